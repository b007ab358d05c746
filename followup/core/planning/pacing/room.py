"""What the coming weeks hold: labor hours by skill and check-in times, what bookings use of them, what is left."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date, timedelta
from zoneinfo import ZoneInfo

from followup.core.planning.pacing.brought import USUAL, Brought
from followup.core.planning.pacing.weeks import ALL_WEEKS, landings, monday_of, week_of
from followup.core.planning.slots import Taken, labor_left
from followup.core.shop import Shop, open_span

# Beside the skills: check-in times, one for each visit.
CHECK_IN = "check_in"
Weekly = tuple[float, ...]


@dataclass(frozen=True)
class Room:
    """By what is used up, and by week from that of `begins_on` (a Monday) on; this week counts from tomorrow.

    `planned` is what the open days hold, `booked` what bookings and held times use of it, `free` what no day of the
    week has given away; `brought` what texts bring, and when. What the shop plans no hours for is not in it: an advisor
    arranges such work.
    """

    begins_on: date
    today: date
    planned: Mapping[str, Weekly]
    booked: Mapping[str, Weekly]
    free: Mapping[str, Weekly]
    brought: Brought = USUAL

    def begin_of(self, week: int) -> date:
        """The Monday of that week."""
        return self.begins_on + timedelta(weeks=week)

    def leaves(self, week: int) -> float:
        """The day after texts of that week leave, on its Monday or today, in days since the first Monday."""
        return max(7.0 * week, (self.today - self.begins_on).days) + 1.0


@dataclass(frozen=True)
class TextOut:
    """A text that left, or is about to, and has brought no booking yet; a request that waits has the chance 1."""

    on: date
    chance: float
    hours: Mapping[str, float]


def uses_of(hours: Mapping[str, float]) -> dict[str, float]:
    """All that one visit with these labor hours uses up."""
    return {**{skill: each for skill, each in hours.items() if each > 0}, CHECK_IN: 1.0}


def room_of(shop: Shop, taken: Iterable[Taken], today: date, weeks: int = ALL_WEEKS) -> Room:
    """What the shop has from tomorrow to the end of so many weeks; today's visits are arranged by people."""
    begins_on, zone = monday_of(today), ZoneInfo(shop.zone)
    by_day: dict[date, list[Taken]] = defaultdict(list)
    for one in taken:
        by_day[one.starts_at.astimezone(zone).date()].append(one)
    names = [skill for skill, hours in shop.rules.labor_hours.items() if hours > 0] + [CHECK_IN]
    planned, booked, free = ({name: [0.0] * weeks for name in names} for _ in range(3))
    day, end = today + timedelta(days=1), begins_on + timedelta(weeks=weeks)
    while day < end:
        week = week_of(begins_on, day)
        for name, (holds, left) in _day(shop, day, by_day[day]).items():
            if name in planned:
                planned[name][week] += holds
                booked[name][week] += holds - left
                # A day that is overbooked takes nothing off the others.
                free[name][week] += max(left, 0.0)
        day += timedelta(days=1)
    weekly = [{name: tuple(one[name]) for name in names} for one in (planned, booked, free)]
    return Room(begins_on, today, weekly[0], weekly[1], weekly[2])


def _day(shop: Shop, day: date, taken: list[Taken]) -> dict[str, tuple[float, float]]:
    """What the day holds and what is left of it, by what is used up; {} where it is closed."""
    span = open_span(shop, day)
    if span is None:
        return {}
    rules = shop.rules
    holds = labor_left(shop, day, ())
    left = labor_left(shop, day, taken)
    times = float((span[1] - span[0]) // timedelta(minutes=rules.check_in_minutes) * rules.advisors_at_check_in)
    checked_in = sum("early_drop" not in one.needs for one in taken)
    return {**{name: (holds[name], left[name]) for name in holds}, CHECK_IN: (times, times - checked_in)}


@dataclass(frozen=True)
class ToLeave:
    """An invite that is placed in a week and has not left; weeks that are past count as this one."""

    week: int
    chance: float
    hours: Mapping[str, float]


def expected_of_placed(room: Room, placed: Iterable[ToLeave]) -> dict[str, list[float]]:
    """What the invites that are placed are expected to use, by what is used up and by week."""
    weeks = len(next(iter(room.free.values())))
    found = {name: [0.0] * weeks for name in room.free}
    for one in placed:
        for week, share in landings(room.leaves(max(one.week, 0)), shares=room.brought.landing).items():
            for name, each in uses_of(one.hours).items():
                if name in found and week < weeks:
                    found[name][week] += one.chance * share * each
    return found


def added(*parts: Mapping[str, list[float]]) -> dict[str, list[float]]:
    """The sum of what several expect to use."""
    return {name: [sum(each) for each in zip(*(part[name] for part in parts), strict=True)] for name in parts[0]}


def expected(room: Room, out: Iterable[TextOut]) -> dict[str, list[float]]:
    """What the texts that are out are still expected to use, by what is used up and by week."""
    weeks, from_day = len(next(iter(room.free.values()))), (room.today - room.begins_on).days + 1.0
    found = {name: [0.0] * weeks for name in room.free}
    for one in out:
        shares = landings((one.on - room.begins_on).days + 1.0, from_day, room.brought.landing)
        ahead = sum(shares.values())
        # Who has not booked so far books later with what is left of the chance.
        chance = one.chance / max(1.0 - one.chance * (1.0 - ahead), 1e-9) if one.chance < 1.0 else 1.0
        if one.chance == 1.0 and ahead < 1.0:
            # A wish that waits is settled soon, however old it is.
            shares = landings(from_day, shares=room.brought.landing)
        for name, each in uses_of(one.hours).items():
            for week, share in shares.items():
                if name in found and 0 <= week < weeks:
                    found[name][week] += chance * share * each
    return found
