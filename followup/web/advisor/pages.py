"""All pages of this folder, and their links at the top."""

from __future__ import annotations

from followup.web.advisor import calls, cars, feeds, fleet, home, may_text, meant, requests, said, threads, visits
from followup.web.advisor.blueprint import blueprint
from followup.web.navigation import Link

__all__ = ["GROUP", "LINKS", "PAGES", "blueprint"]

# Importing a page's module hangs its views on the blueprint.
PAGES = (home, requests, calls, threads, may_text, meant, cars, visits, said, feeds, fleet)
GROUP = "Desk"
LINKS = (
    Link("advisor.home", "Today"),
    Link("advisor.requests", "Requests"),
    Link("advisor.calls", "Phone list"),
    Link("advisor.find", "Customers and cars"),
    Link("advisor.may_text", "May we text"),
)
