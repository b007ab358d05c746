"""Consent of a number: an append-only ledger, and what it allows at an instant.

Law and practice behind it: 47 CFR 64.1200(a)(10), (f)(9); a stop binds the number, all cars, persons and covers.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime
from typing import Literal

from followup.core.text import COVERS, Cover

HOW = ("signed_paper", "tablet", "web_form", "text_in", "spoken", "imported_unproven")
# How a fleet's contact may have agreed to the weekly list.
WRITTEN = ("signed_paper", "tablet", "web_form")
KEPT_AS_IT_HAPPENS = frozenset({"tablet", "web_form", "text_in"})
# Why a stop is written before it is asked whether all was meant; it is held against what is queued, which waits.
HELD = "held until it is told whether all was meant"
Event = Literal["given", "narrowed", "taken_back", "given_again"]


@dataclass(frozen=True)
class ConsentEntry:
    """One line of the ledger. `at` (aware UTC) is when it was kept, `given_on` the day on which it was given.

    `covers` of a `given` are those agreed to; of a `narrowed` those that are taken away; a `taken_back` takes all.
    """

    number: str
    event: Event
    covers: tuple[str, ...]
    at: datetime
    given_on: date
    how: str
    words: str = ""
    words_version: str = ""
    language: str = "en"
    is_own_and_adult: bool = False
    because: str = ""


def covers_of_grant(entry: ConsentEntry) -> frozenset[str]:
    """The covers that one `given` really gives: spoken covers visits only, imported without proof nothing, and an
    agreement to upkeep holds only for the person's own number as an adult."""
    if entry.how == "imported_unproven":
        return frozenset()
    if entry.how == "spoken":
        return frozenset(entry.covers) & {"visits"}
    if not entry.is_own_and_adult:
        return frozenset(entry.covers) & {"visits"}
    return frozenset(entry.covers) & frozenset(COVERS)


@dataclass(frozen=True)
class ConsentStanding:
    """What the ledger allows now. `is_stopped` binds everything; `decided_by` is the entry that decided."""

    covers: frozenset[str]
    is_stopped: bool
    decided_by: ConsentEntry | None

    @property
    def is_held(self) -> bool:
        """True while it is asked whether the stop was meant for everything."""
        return self.is_stopped and self.decided_by is not None and self.decided_by.because == HELD

    def allows(self, cover: Cover | None) -> bool:
        """True where a text of that cover may leave; None (answers) needs only that no stop stands."""
        return not self.is_stopped and (cover is None or cover in self.covers)


def standing(ledger: Iterable[ConsentEntry]) -> ConsentStanding:
    """Play the ledger of one number, oldest first (by `at`; a stop after a consent of the same instant).

    A stop wins until `given_again` (START gives back the covers that stood at the stop, without those narrowed since)
    or a `given` kept after it that was given after it. One consent, known by the day and its words, counts once, so
    importing an old line again revives nothing; a line that proves nothing lifts no stop.
    """
    covers: frozenset[str] = frozenset()
    before_stop: frozenset[str] = frozenset()
    stopped_by: ConsentEntry | None = None
    decided_by: ConsentEntry | None = None
    counted: set[tuple[date, str]] = set()
    for entry in sorted(ledger, key=lambda one: (one.at, one.event == "taken_back")):
        if entry.event == "given":
            is_known = (entry.given_on, entry.words) in counted
            counted.add((entry.given_on, entry.words))
            if is_known or (stopped_by and not _lifts(entry, stopped_by)):
                continue
            covers = covers_of_grant(entry) | (frozenset() if stopped_by else covers)
            stopped_by = None
        elif entry.event == "narrowed":
            covers -= frozenset(entry.covers)
            before_stop -= frozenset(entry.covers)
        elif entry.event == "taken_back":
            before_stop = before_stop if stopped_by else covers
            covers, stopped_by = frozenset(), entry
        elif stopped_by:  # given_again
            covers, stopped_by = before_stop, None
        decided_by = entry
    return ConsentStanding(covers, stopped_by is not None, decided_by)


def _lifts(entry: ConsentEntry, stopped_by: ConsentEntry) -> bool:
    """True where the consent was surely given after the stop. Of a paper of the same day nobody knows the hour, so it
    does not count; a form or a text is kept as it happens."""
    if not covers_of_grant(entry) or entry.given_on < stopped_by.given_on:
        return False
    return entry.given_on > stopped_by.given_on or entry.how in KEPT_AS_IT_HAPPENS


_SAYS: dict[Event, str] = {
    "given": "given",
    "narrowed": "a part was taken back",
    "taken_back": "taken back",
    "given_again": "given again",
}


def in_words(entry: ConsentEntry) -> str:
    """One line of the ledger for a page or a command: what happened, when, how, and of which words."""
    words = f", words of version {entry.words_version}" if entry.words_version else ""
    because = f"; {entry.because}" if entry.because else ""
    return f"{_SAYS[entry.event]} on {entry.given_on} ({entry.how.replace('_', ' ')}{words}{because})"


def last_given_on(ledger: Iterable[ConsentEntry]) -> date | None:
    """The day of the newest consent that stands, as the check of reassigned numbers asks for it; None where none does.

    A consent that was given again counts from the day on which it was.
    """
    lines = list(ledger)
    now = standing(lines)
    if not now.covers:
        return None
    given = [one for one in lines if one.event == "given_again" or (one.event == "given" and covers_of_grant(one))]
    return max((one.given_on for one in given), default=None)
