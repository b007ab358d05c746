"""Which reasons there are to write about a car now, the most pressing first; whether they may leave is `decide.py`.

Due work is written about when the chance of being due within the lead time reaches q (`joining.py`). The reasons
that are not wear: a recall, a missed booking, the after-visit question, a free top-off (`walk_ins.py`), what is done
before winter (`seasonal.py`), the odometer.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, datetime, timedelta
from typing import Any

from followup.core.advisories.words import in_short
from followup.core.planning.candidate import Candidate
from followup.core.planning.item_stops import is_asked_again, item_stop
from followup.core.planning.joining import join, triggers
from followup.core.planning.picture import Because, CarPicture, DueItem
from followup.core.planning.seasonal import seasonal
from followup.core.planning.set_change import set_change
from followup.core.planning.told_along import booked_with, told_along
from followup.core.planning.walk_ins import free_service, is_free, long_unseen
from followup.core.planning.worth import COUNTS_FROM
from followup.core.shop import ShopRules

MISSED_IS_OLD_AFTER_DAYS = 14
AFTER_VISIT_FROM = timedelta(days=1)
AFTER_VISIT_UNTIL = timedelta(days=7)
ODOMETER_FROM_CHANCE = 0.10
ODOMETER_AFTER_DAYS = 90


def lowest_chance(rules: ShopRules) -> float:
    """The least chance of being due at which any rule of planning begins to ask about an item."""
    together = min(rules.send_worn_at_chance, COUNTS_FROM)
    return min(rules.send_at_chance, together, rules.join_at_chance, ODOMETER_FROM_CHANCE)


def candidates(picture: CarPicture, now: datetime) -> list[Candidate]:
    """All reasons to write about this car, the most pressing first: legal limits, recalls, what was missed, the
    after-visit question, a change of sets, due work, free services, what is seasonal, a car not seen for long, the
    odometer."""
    due = list(_due_work(picture, now))
    found = [one for one in due if one.is_legal]
    found += _recalls(picture)
    found += _missed_visit(picture, now)
    found += _after_visit(picture, now)
    # With what else is due: the visit that changes the set does it too.
    found += set_change(picture, now)
    found += [one for one in due if not one.is_legal]
    found += free_service(picture, now)
    found += seasonal(picture, now)
    found += long_unseen(picture, now)
    found += _odometer_question(picture, now)
    return found


def items_left_out(picture: CarPicture, now: datetime) -> Iterator[Because]:
    """Why items that are due are in no text."""
    for due in triggers(picture.due, picture.shop.rules):
        stop = item_stop(picture, due, now)
        if stop:
            yield stop


def _due_work(picture: CarPicture, now: datetime) -> Iterator[Candidate]:
    """Work coming due, joined; at its legal limit it is a reason of its own, with tries of its own."""
    rules = picture.shop.rules
    allowed = [one for one in picture.due if not is_free(picture, one, now) and not item_stop(picture, one, now)]
    again = {one.at: day for one in allowed if (day := is_asked_again(picture, one, now))}
    joined = join(allowed, rules, again)
    if joined is None:
        return
    names = ", ".join(f"{item} {position}".strip() for item, position in joined.at)
    along = told_along(picture, joined.at, now)
    names += "".join(f"; told along: {in_short(one)}" for one in along)
    more: dict[str, Any] = {"items": (*joined.at, *booked_with(along)), "advised": tuple(one.key for one in along)}
    raised_on = _raised_on(picture, joined.triggers)
    raised_by = f"car {picture.vehicle}, known {raised_on}"
    if joined.is_legal:
        says = f"at its legal limit now or within {rules.lead_days} days: {names}"
        yield Candidate("due_work", f"{raised_by}, legal limit", says, is_legal=True, chance=joined.chance, **more)
    elif all(one.at in again for one in joined.triggers):
        day = max(again.values())
        says = f"the customer asked to hear of it from {day} on: {names}"
        yield Candidate("due_work", f"car {picture.vehicle}, asked for {day}", says, chance=joined.chance, **more)
    else:
        says = f"{joined.chance:.0%} due within {rules.lead_days} days: {names}"
        yield Candidate("due_work", raised_by, says, chance=joined.chance, **more)


def _raised_on(picture: CarPicture, items: tuple[DueItem, ...]) -> date | None:
    """The last reading of these items or the last visit, whichever is later: a new one is a new reason."""
    visit = picture.last_closed()
    days = [one.measured_on for one in items if one.measured_on]
    if visit and visit.closed_at:
        days.append(picture.day(visit.closed_at))
    return max(days, default=None)


def _recalls(picture: CarPicture) -> Iterator[Candidate]:
    for recall in picture.recalls:
        yield Candidate("recall", f"recall {recall.code}, car {picture.vehicle}", "a recall that staff entered")


def _missed_visit(picture: CarPicture, now: datetime) -> Iterator[Candidate]:
    """Once, and only while it is fresh and nothing else was booked since."""
    for booking in picture.bookings:
        if booking.state != "missed" or booking.starts_at is None:
            continue
        since = (picture.day(now) - picture.day(booking.starts_at)).days
        is_last = all(other.asked_at <= booking.asked_at for other in picture.bookings)
        came_since = any(visit.opened_at > booking.starts_at for visit in picture.visits)
        if 0 <= since <= MISSED_IS_OLD_AFTER_DAYS and is_last and not came_since:
            # With its work, so that a new time is asked for with the hours that it takes.
            yield Candidate("missed_visit", f"booking {booking.code}", "a booking was missed", booking.items)


def _after_visit(picture: CarPicture, now: datetime) -> Iterator[Candidate]:
    """One question a day to a week after a visit, only where there was no complaint."""
    visit = picture.last_closed()
    if visit is None or visit.closed_at is None or not picture.shop.rules.asks_after_visit:
        return
    complained = picture.complained_on is not None and picture.complained_on >= picture.day(visit.opened_at)
    if not complained and AFTER_VISIT_FROM <= now - visit.closed_at <= AFTER_VISIT_UNTIL:
        yield Candidate("after_visit", f"visit {visit.code}", "a visit ended a day ago or more")


def _odometer_question(picture: CarPicture, now: datetime) -> Iterator[Candidate]:
    """Asked alone only where it pays, of a car seen once, three months ago or more, whose work is not near yet."""
    visit = picture.last_closed()
    if not picture.is_odometer_worth_a_text or visit is None or visit.closed_at is None or len(picture.visits) != 1:
        return
    chance = max((one.chance_by_lead for one in picture.due if not item_stop(picture, one, now)), default=0.0)
    is_old = (picture.day(now) - picture.day(visit.closed_at)).days >= ODOMETER_AFTER_DAYS
    if is_old and ODOMETER_FROM_CHANCE <= chance < picture.shop.rules.send_at_chance:
        says = "seen once, months ago; the odometer would tell when it is due"
        yield Candidate("odometer_question", f"car {picture.vehicle}, visit {visit.code}", says, (), False, chance)
