"""All pages of this folder, and their links at the top."""

from __future__ import annotations

from followup.web.navigation import Link
from followup.web.phone import handset
from followup.web.phone.blueprint import blueprint

__all__ = ["LINKS", "PAGES", "blueprint"]

# Importing a page's module hangs its views on the blueprint.
PAGES = (handset,)
LINKS = (Link("phone.phones", "Test phone", is_shown=handset.is_played_here),)
