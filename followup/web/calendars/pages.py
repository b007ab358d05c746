"""All addresses of this folder. They are in no list of links: each is told to one reader."""

from __future__ import annotations

from followup.web.calendars import files
from followup.web.calendars.blueprint import blueprint

__all__ = ["PAGES", "blueprint"]

# Importing a page's module hangs its views on the blueprint.
PAGES = (files,)
