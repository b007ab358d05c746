"""All pages of this folder, and their links at the top."""

from __future__ import annotations

from followup.web.manager import (
    corrections,
    duty,
    forecasts,
    home,
    items,
    learned,
    reassigned,
    sets,
    timing,
    trials,
    weeks,
    what_if,
    wording,
)
from followup.web.manager.blueprint import blueprint
from followup.web.navigation import Link

__all__ = ["GROUP", "LINKS", "PAGES", "blueprint"]

# Importing a page's module hangs its views on the blueprint.
PAGES = (home, corrections, forecasts, learned, reassigned, weeks, sets, timing, what_if, wording, trials, items, duty)
GROUP = "Manager"
LINKS = (
    Link("manager.home", "How it went"),
    Link("manager.forecasts", "How right we were"),
    Link("manager.learned", "What cars taught"),
    Link("manager.weeks", "Coming weeks"),
    Link("manager.sets", "Season tires"),
    Link("manager.timing", "When we text"),
    Link("manager.wordings", "What we say"),
    Link("manager.items", "What we look at"),
    Link("manager.duty", "Duty"),
    Link("manager.reassigned", "Reassigned numbers"),
)
