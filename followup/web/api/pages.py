"""All addresses of this folder; programs need no links at the top."""

from __future__ import annotations

from followup.web.api import inspections, openapi
from followup.web.api.blueprint import blueprint

__all__ = ["PAGES", "blueprint"]

# Importing a module hangs its views on the blueprint.
PAGES = (inspections, openapi)
