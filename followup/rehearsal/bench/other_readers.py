"""General-purpose readers of dates beside which ours is measured; development only, and said where not installed."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from importlib import import_module
from importlib.util import find_spec

Reader = Callable[[str], datetime | None]
"""A text to the moment that it names, None where nothing was found."""


def _dateutil(now: datetime, language: str) -> Reader:
    parse = import_module("dateutil.parser").parse

    def read(text: str) -> datetime | None:
        try:
            found: datetime = parse(text, fuzzy=True, default=now.replace(hour=0, minute=0))
        except (ValueError, OverflowError):
            return None
        return found.replace(tzinfo=None)

    return read


def _dateparser(now: datetime, language: str) -> Reader:
    search = import_module("dateparser.search").search_dates
    wishes = {"RELATIVE_BASE": now, "PREFER_DATES_FROM": "future", "RETURN_AS_TIMEZONE_AWARE": False}

    def read(text: str) -> datetime | None:
        found = search(text, languages=[language], settings=wishes)
        return found[0][1] if found else None

    return read


def _parsedatetime(now: datetime, language: str) -> Reader:
    calendar = import_module("parsedatetime").Calendar()

    def read(text: str) -> datetime | None:
        found, kind = calendar.parseDT(text, sourceTime=now)
        return found if kind else None

    return read


OTHERS: dict[str, tuple[str, tuple[str, ...], Callable[[datetime, str], Reader]]] = {
    "python-dateutil, fuzzy": ("dateutil", ("en",), _dateutil),
    "dateparser, search": ("dateparser", ("en", "es"), _dateparser),
    "parsedatetime": ("parsedatetime", ("en",), _parsedatetime),
}
"""Name: the module that it needs, the languages that it reads, how it is made for a moment and a language."""


def is_installed(name: str) -> bool:
    """Whether a reader can be run here."""
    return find_spec(OTHERS[name][0]) is not None
