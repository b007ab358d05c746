"""The links at the top of each page: those that the one who asks may open, grouped as the list of people is."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from types import ModuleType
from typing import Any

from flask import Flask, request

from followup.web.login import me
from followup.web.security import may_use
from followup.web.words import shop


@dataclass(frozen=True)
class Link:
    """A page at the top: its view (`advisor.requests`) and the words of the link; `is_shown` says whether this
    installation has the page at all."""

    endpoint: str
    words: str
    is_shown: Callable[[], bool] = lambda: True


# With more links than this a narrow screen shows them behind a button.
MOST_IN_SIGHT = 5


@dataclass(frozen=True)
class Group:
    """The links of one person's pages; `words` names them where there are others beside."""

    words: str
    links: tuple[dict[str, Any], ...]


def add_to(app: Flask, people: Iterable[ModuleType]) -> None:
    """Each person's `pages` module may have LINKS, and GROUP, their name; who sees a link follows from what its view
    declares."""
    groups = [(getattr(person, "GROUP", ""), getattr(person, "LINKS", ())) for person in people]

    @app.context_processor
    def head() -> dict[str, Any]:
        """What the head of each page shows."""
        return {"navigation": _navigation, "most_in_sight": MOST_IN_SIGHT, "shop": shop, "me": me}

    def _navigation() -> list[Group]:
        found = [Group(words, tuple(_shown(links))) for words, links in groups]
        return [group for group in found if group.links]


def _shown(links: Iterable[Link]) -> Iterator[dict[str, Any]]:
    for link in links:
        if may_use(link.endpoint) and link.is_shown():
            yield {"endpoint": link.endpoint, "words": link.words, "is_here": _is_here(link.endpoint)}


def _is_here(endpoint: str) -> bool:
    return request.endpoint == endpoint
