"""What a calendar shows of booking requests: one entry a visit, under an id that stays, with iCalendar's status.

A visit that was moved is the same visit: the request that took over keeps the id of the first one, and its sequence
only grows, so that a calendar moves its entry in place of showing two. Until the move is confirmed the old time and
the wish for a new one stand beside each other.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from datetime import date, datetime

from followup.core.booking import ICALENDAR_STATUS

MOVED = "moved"


@dataclass(frozen=True)
class Booked:
    """A booking request as calendars need it.

    `times` are where it may stand: instants (aware UTC), or days where no hour is known; several while times are
    offered. `replaces` is the request that it took over from by being confirmed; `was_moved`: another one took over.
    """

    id: int
    state: str
    version: int
    changed_at: datetime
    times: tuple[datetime | date, ...]
    replaces: int | None = None
    was_moved: bool = False


@dataclass(frozen=True)
class Placed:
    """A booking at one time, with what RFC 5545 asks of its entry; `number` counts the times that are offered."""

    booking: Booked
    uid: str
    sequence: int
    status: str
    at: datetime | date
    number: int = 1


def place(bookings: Iterable[Booked], domain: str) -> Iterator[Placed]:
    """The entries of these bookings, in their order; those that another one took over have none of their own.

    `domain` makes the ids unique in the world. A booking without any time is in no calendar.
    """
    found = list(bookings)
    known = {one.id: one for one in found}
    for one in found:
        if one.was_moved:
            continue
        chain = _chain(one, known)
        # Each change of any of them counts: the sequence of what took over lies above all that was told before.
        sequence = sum(link.version for link in chain) - 1
        for number, at in enumerate(one.times, start=1):
            uid = f"visit-{chain[-1].id}{f'-{number}' if number > 1 else ''}@{domain}"
            yield Placed(one, uid, sequence, ICALENDAR_STATUS[one.state], at, number)


def first_of(booking_id: int, known: Mapping[int, Booked]) -> int:
    """The id of the request that began the visit."""
    return _chain(known[booking_id], known)[-1].id


def _chain(one: Booked, known: Mapping[int, Booked]) -> list[Booked]:
    """The booking, and those that it took over from, the newest first."""
    chain = [one]
    while (before := known.get(chain[-1].replaces or 0)) and before.was_moved:
        chain.append(before)
    return chain


@dataclass(frozen=True)
class CalendarEntry:
    """One entry with its words, ready to be written; `lasts_minutes` where `at` is an instant."""

    placed: Placed
    title: str
    says: str
    lasts_minutes: int
    place: str = ""
    address: str = ""
