"""The change to winter or summer tires: whom a shop that changes sets invites, so many a week as it can take.

A manager begins a season; each week as many cars are drawn as the weeks after can take (`pacing/tranche.py`). Whoever
was drawn is told once, with what else joins the visit. With the season's last day it is over.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime, timedelta

from followup.core.forecast.tire_seasons import WINTER, tire_seasons
from followup.core.planning.candidate import Candidate
from followup.core.planning.draw import left_out
from followup.core.planning.item_stops import item_stop
from followup.core.planning.joining import join
from followup.core.planning.picture import Because, CarPicture, DueItem, ItemAt, SetChange
from followup.core.planning.spacing import too_often
from followup.core.planning.stops import stops_against
from followup.core.planning.walk_ins import is_free

REASON, ITEM = "set_change", "set_change"
SET_AT: ItemAt = (ITEM, "")
# A season lasts so long, unless its manager says otherwise (an assumption; people change within some weeks).
SEASON_DAYS = 56
_HERE = frozenset({"stored_here", "with_customer", "to_be_changed"})


@dataclass(frozen=True)
class SetsKnown:
    """What is known of the sets of a car: (day, label) of those seen on it in the order of time, the last that was
    said of the other set, and the days on which they were changed here."""

    seen: tuple[tuple[date, str], ...] = ()
    other: str | None = None
    changed_on: tuple[date, ...] = ()

    @property
    def is_on(self) -> str | None:
        """The label of the set that is on: the last one seen, turned by each change since."""
        if not self.seen:
            return None
        day, label = self.seen[-1]
        for _ in [one for one in self.changed_on if one > day]:
            label = "summer" if label == WINTER else WINTER
        return label


def changes_to(known: SetsKnown, to_set: str, state: str | None) -> bool:
    """Whether the car has a set for that season and does not wear it yet, by what was seen of it.

    Winter tires on a car are changed in spring. In fall it is those that were seen on winter tires before, those whose
    other set was noted, and summer tires where people change at all (`tire_seasons`).
    """
    is_winter_on = known.is_on == WINTER
    if to_set != WINTER:
        return is_winter_on
    if is_winter_on or known.other == "none":
        return False
    had_winter = any(label == WINTER for _, label in known.seen) or known.other in _HERE
    return had_winter or (known.is_on == "summer" and tire_seasons(state).is_changed_in_winter)


def set_change(picture: CarPicture, now: datetime) -> Iterator[Candidate]:
    """The reason for a car that was drawn, until the season ends; not where the car was here since, or it rests."""
    due, today = picture.set_change, picture.day(now)
    if due is None or today > due.until_on or _is_settled(picture, due, now):
        return
    at = (SET_AT, *joined_with(picture, now))
    says = f"drawn to change to {due.to_set} tires in the season until {due.until_on}"
    yield Candidate(REASON, f"season {due.season_id}, car {picture.vehicle}", says, at)


def joined_with(picture: CarPicture, now: datetime) -> tuple[ItemAt, ...]:
    """What else may be due soon enough to be done at the same visit, in the order of a text."""
    rules = picture.shop.rules
    allowed = [one for one in picture.due if not is_free(picture, one, now) and not item_stop(picture, one, now)]
    near = [one.at for one in allowed if one.chance_joined >= rules.join_at_chance]
    joined = join(allowed, rules, near)
    return joined.at if joined else ()


def why_not_now(picture: CarPicture, due: SetChange, now: datetime) -> Because | None:
    """Why the car is not drawn this week; None where it may be."""
    raised_by = f"season {due.season_id}, car {picture.vehicle}"
    for stop in stops_against(picture, REASON, now):
        return stop
    if _is_settled(picture, due, now):
        return Because("settled", "it was here since, or the customer wants no change")
    if out := left_out(picture, REASON, picture.day(now), is_legal=False):
        return out
    return next(iter(too_often(picture, REASON, raised_by, now, is_legal=False)), None)


def _is_settled(picture: CarPicture, due: SetChange, now: datetime) -> bool:
    if any(picture.day(visit.opened_at) >= due.began_on for visit in picture.visits):
        return True
    # What was done, or said, before the season counts for the one before it.
    return item_stop(picture, DueItem(ITEM, "", 0.0, 0.0, due.began_on - timedelta(days=1)), now) is not None


def usual_until(begins_on: date) -> date:
    """The last day of a season that begins then."""
    return begins_on + timedelta(days=SEASON_DAYS)


def usual_set(state: str | None, today: date) -> str:
    """The set that people change to next: winter tires from midsummer to the end of winter's first half."""
    usual = tire_seasons(state)
    of_year = today.timetuple().tm_yday
    return WINTER if usual.winter_ends + 60 <= of_year or of_year < 30 else "summer"


def weeks_left(today: date, until_on: date) -> int:
    """How many weeks may be drawn yet, this one included."""
    return max((until_on - today).days // 7 + 1, 0)
