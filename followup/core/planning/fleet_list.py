"""A fleet's weekly list: on which day it leaves, and which units stand in it.

A unit stands in it for work that is due or a booking that was missed; a recall has words of its own, which an advisor
tells. What stops an invite about the car stops its line; spacing, tries and caps do not bind the list.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date, datetime, timedelta

from followup.core.planning.picture import CarPicture, ItemAt
from followup.core.planning.send_rule import candidates
from followup.core.planning.stops import STOPS_OF_CAR, visit_just_closed

LISTED = ("due_work", "missed_visit")
# A list whose day was missed (an outage, a holiday) may leave until then; after that the next week's says it all.
LATE_DAYS = 2


@dataclass(frozen=True)
class ListedUnit:
    """One unit of the list; `items` () where it is not about items."""

    vehicle: str
    unit: str
    reason: str
    items: tuple[ItemAt, ...] = ()


def week_of(today: date, weekday: int) -> str | None:
    """The week whose list is due on that day, like `2026-W49`; None where none is."""
    since = (today - timedelta(days=weekday)).weekday()
    if since > LATE_DAYS:
        return None
    year, week, _ = (today - timedelta(days=since)).isocalendar()
    return f"{year}-W{week:02}"


def listed_units(pictures: Iterable[CarPicture], units: Mapping[str, str], now: datetime) -> list[ListedUnit]:
    """The units that belong in the list now, the most pressing first. `units` are their numbers by the car's code."""
    found: list[tuple[tuple[bool, int, float, str], ListedUnit]] = []
    for picture in (one for one in pictures if one.vehicle in units):
        if any(stop(picture, now) for stop in (*STOPS_OF_CAR, visit_just_closed)):
            continue
        wanted = [one for one in candidates(picture, now) if one.reason in LISTED]
        if wanted:
            first, unit = wanted[0], units[picture.vehicle]
            pressing = (not first.is_legal, LISTED.index(first.reason), -first.chance, unit)
            found.append((pressing, ListedUnit(picture.vehicle, unit, first.reason, first.items)))
    return [unit for _, unit in sorted(found, key=lambda one: one[0])]
