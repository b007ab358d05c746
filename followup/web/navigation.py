"""The links at the top of each page: those that the one who asks may open, in the order of the list of people."""

from __future__ import annotations

from collections.abc import Callable, Iterable
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


def add_to(app: Flask, people: Iterable[ModuleType]) -> None:
    """Each person's `pages` module may have LINKS; who sees one follows from what its view declares."""
    links = [link for person in people for link in getattr(person, "LINKS", ())]

    @app.context_processor
    def head() -> dict[str, Any]:
        """What the head of each page shows."""
        return {"navigation": _navigation, "shop": shop, "me": me}

    def _navigation() -> list[dict[str, Any]]:
        return [
            {"endpoint": link.endpoint, "words": link.words, "is_here": _is_here(link.endpoint)}
            for link in links
            if may_use(link.endpoint) and link.is_shown()
        ]


def _is_here(endpoint: str) -> bool:
    return request.endpoint == endpoint
