"""All pages of this folder, and their links at the top."""

from __future__ import annotations

from followup.web.navigation import Link
from followup.web.owner import alerts, customers, here, letters, shop, staff, tokens
from followup.web.owner.blueprint import blueprint

__all__ = ["GROUP", "LINKS", "PAGES", "blueprint"]

# Importing a page's module hangs its views on the blueprint.
PAGES = (staff, shop, tokens, alerts, here, letters, customers)
GROUP = "Owner"
LINKS = (
    Link("owner.staff", "Staff"), Link("owner.shop_facts", "The shop"), Link("owner.stop", "Stop texts"),
    Link("owner.here", "Nothing is sent", here.is_elsewhere),
)  # fmt: skip
