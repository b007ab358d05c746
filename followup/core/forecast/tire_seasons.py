"""When a labelled set of tires is on the car: winter tires in winter, the others in the rest of the year.

The season is that of the place, moved by the days on which the car was seen with one set or the other.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from followup.core.forecast.year import DAYS_A_YEAR, WINTER_BEGINS, WINTER_ENDS, day_of_year

WINTER = "winter"
# A set that was seen on the car in the middle of its off season stays on all year: mid-May to mid-September for winter
# tires, December to February for the others (assumptions).
_MIDSUMMER, _MIDWINTER = (135.0, 256.0), (334.0, 59.0)


@dataclass(frozen=True)
class TireSeasons:
    """When people change tires where the shop is, in days of the year from 1 January: November to March on winter ones.

    `is_changed_in_winter` False: nobody does; a car that was only ever seen on summer tires then keeps them on.
    """

    winter_begins: float = WINTER_BEGINS
    winter_ends: float = WINTER_ENDS
    is_changed_in_winter: bool = True


USUAL = TireSeasons()
# States where winter tires are usual for longer, and where hardly anybody has them (common practice, from memory).
_LONG_WINTER = ("AK", "ID", "ME", "MI", "MN", "MT", "ND", "NH", "NY", "SD", "VT", "WI", "WY")
_NO_WINTER = ("AL", "AR", "AZ", "FL", "GA", "HI", "LA", "MS", "SC", "TX")


def tire_seasons(state: str | None) -> TireSeasons:
    """The seasons in that state of the US (None, or another: what is usual)."""
    if state in _LONG_WINTER:
        return TireSeasons(winter_begins=288.0, winter_ends=105.0)
    return TireSeasons(is_changed_in_winter=state not in _NO_WINTER)


@dataclass(frozen=True)
class Season:
    """The part of each year in which a set is on: from `begins` (day of the year), for `length` days."""

    begins: float
    length: float

    @property
    def ends(self) -> float:
        """Day of the year on which it is taken off."""
        return (self.begins + self.length) % DAYS_A_YEAR

    def holds(self, day: float) -> bool:
        """True where the set is on that calendar day (as `date.toordinal`)."""
        return (day_of_year(day) - self.begins) % DAYS_A_YEAR < self.length

    def next_change(self, day: float) -> float:
        """The first calendar day after `day` on which the set is put on or taken off."""
        of_year = day_of_year(day)
        return day + min((one - of_year) % DAYS_A_YEAR or DAYS_A_YEAR for one in (self.begins, self.ends))


def season_of(mine: str, seen: Iterable[tuple[float, str]], usual: TireSeasons) -> Season | None:
    """When the set `mine` is on, by the days on which the car was seen with which set; None: all year.

    `seen` are calendar days and labels in the order of time.
    """
    days = [(day_of_year(day), label) for day, label in seen]
    others_change = any(label == WINTER for _, label in days) or (mine == "summer" and usual.is_changed_in_winter)
    off = _MIDSUMMER if mine == WINTER else _MIDWINTER
    if not (mine == WINTER or others_change) or any(label == mine and _is_between(day, off) for day, label in days):
        return None
    begins, ends = usual.winter_begins, usual.winter_ends
    for day, label in days:
        is_winter = label == WINTER
        if _is_between(day, (_MIDSUMMER[1], begins) if is_winter else (begins, _MIDWINTER[0])):
            begins = day
        if _is_between(day, (ends, _MIDSUMMER[0]) if is_winter else (_MIDWINTER[1], ends)):
            ends = day
    winter = (ends - begins) % DAYS_A_YEAR
    return Season(begins, winter) if mine == WINTER else Season(ends, DAYS_A_YEAR - winter)


def _is_between(day: float, span: tuple[float, float]) -> bool:
    """True where that day of the year lies in the span, which may go over New Year."""
    begin, end = span
    return (day - begin) % DAYS_A_YEAR < (end - begin) % DAYS_A_YEAR
