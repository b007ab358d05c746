"""All pages of this folder, and their links at the top."""

from __future__ import annotations

from followup.web.navigation import Link
from followup.web.technician import consent, drafts, home, inspect, result, top_off
from followup.web.technician.blueprint import blueprint

__all__ = ["GROUP", "LINKS", "PAGES", "blueprint"]

# Importing a page's module hangs its views on the blueprint.
PAGES = (home, drafts, inspect, result, top_off, consent)
GROUP = "Floor"
LINKS = (Link("technician.home", "Inspections"), Link("technician.top_off", "Top-off"))
