"""All pages of this folder, and their links at the top."""

from __future__ import annotations

from followup.web.navigation import Link
from followup.web.technician import home
from followup.web.technician.blueprint import blueprint

__all__ = ["LINKS", "PAGES", "blueprint"]

# Importing a page's module hangs its views on the blueprint.
PAGES = (home,)
LINKS = (Link("technician.home", "Inspections"),)
