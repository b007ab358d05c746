"""What rests a single item of a car: done, declined, a no, and what goes to a person instead of into a text."""

from __future__ import annotations

from datetime import date, datetime, timedelta

from followup.core.planning.picture import Because, CarPicture, DueItem, ItemAt, PhoneTask, Rest
from followup.core.vehicle import WALKING_ORDER
from followup.core.visit import Recommendation


def item_stop(picture: CarPicture, due: DueItem, now: datetime) -> Because | None:
    """Why no text may name this item now; None where one may."""
    today = picture.day(now)
    stop = _done(picture, due) or _resting(picture, due, today) or _declined(picture, due, now)
    return Because(stop.rule, f"{due.item} {due.position}".strip() + f": {stop.says}") if stop else None


def is_asked_again(picture: CarPicture, due: DueItem, now: datetime) -> date | None:
    """The day from which the customer wanted to hear of it again, where that day has come and no text followed it."""
    today = picture.day(now)
    advised, rest = _last_advice(picture, due), _last_rest(picture, due)
    days = [
        advised.until if advised and advised.decision == "later" else None,
        rest.until if rest and rest.because == "later" else None,
    ]
    until = max((day for day in days if day), default=None)
    return until if until and until <= today and not _told_since(picture, due, until) else None


def calls_to_make(picture: CarPicture, now: datetime) -> tuple[PhoneTask, ...]:
    """Items that only a person may bring up: declined for the price, or declined though past the legal limit.

    The places of one item about which the same was said are one call.
    """
    calls: dict[tuple[str, str, date], list[ItemAt]] = {}
    for due in sorted(picture.due, key=lambda one: WALKING_ORDER.index(one.position)):
        advised = _last_advice(picture, due)
        if advised is None or advised.decision not in ("declined", "later"):
            continue
        if due.is_past_legal:
            says = f"advised on {advised.on}, past its legal limit: call, and keep what was advised in the record"
        elif advised.decision == "declined" and advised.because == "price":
            says = f"advised on {advised.on}, the price was the reason: a person talks about it"
        else:
            continue
        calls.setdefault((due.item, says, advised.on), []).append(due.at)
    # The key names the first place alone, so that a place that joins later makes no second call.
    return tuple(
        PhoneTask(f"declined {picture.vehicle} {item} {found[0][1]} {on}", says, tuple(found))
        for (item, says, on), found in calls.items()
    )


def _done(picture: CarPicture, due: DueItem) -> Because | None:
    """Work that the forecast does not know yet."""
    for work in picture.work:
        is_same = work.item == due.item and work.position in (due.position, "")
        if is_same and (due.measured_on is None or work.on > due.measured_on):
            return Because("done", f"{work.did} on {work.on}")
    return None


def _resting(picture: CarPicture, due: DueItem, today: date) -> Because | None:
    rest = _last_rest(picture, due)
    if rest is None:
        return None
    if rest.because == "done":
        return Because("done", "the customer says it has been done; it rests until it is measured again")
    if rest.because == "later":
        until = rest.until or rest.from_on + timedelta(days=picture.shop.rules.rest_after_declined_days)
        return Because("later", f"asked again from {until} on, at the customer's wish") if today < until else None
    until = rest.until or rest.from_on + timedelta(days=picture.shop.rules.rest_after_no_days)
    return Because("said_no", f"a no on {rest.from_on}; it rests until {until}") if today < until else None


def _declined(picture: CarPicture, due: DueItem, now: datetime) -> Because | None:
    """Declined at the counter: one text after its rest, never where the price was the reason or the law ends it."""
    advised, today = _last_advice(picture, due), picture.day(now)
    if advised is None or advised.decision == "no_answer":
        return None
    if advised.decision == "approved":
        return Because("approved", f"approved on {advised.on}: its time is the advisor's to arrange")
    if due.is_past_legal:
        return Because("declined_legal", "advised and past its legal limit: an advisor calls, no text")
    if advised.decision == "declined" and advised.because == "price":
        return Because("declined_price", "the price was the reason: a person, no text")
    from_on = _speaks_again_on(picture, advised)
    if today < from_on:
        return Because("declined", f"advised on {advised.on}; one text from {from_on} on")
    if _told_since(picture, due, from_on):
        return Because("declined", f"advised on {advised.on}; the one text about it has been sent")
    return None


def _speaks_again_on(picture: CarPicture, advised: Recommendation) -> date:
    if advised.decision == "later" and advised.until:
        return advised.until
    return advised.on + timedelta(days=picture.shop.rules.rest_after_declined_days)


def _last_advice(picture: CarPicture, due: DueItem) -> Recommendation | None:
    """The last recommendation for the item that no newer reading or replacement has overtaken."""
    found = [
        one
        for one in picture.recommendations
        if (one.item, one.position) == due.at and (due.measured_on is None or one.on >= due.measured_on)
    ]
    return max(found, key=lambda one: one.on, default=None)


def _last_rest(picture: CarPicture, due: DueItem) -> Rest | None:
    """The last rest for the item that no newer reading has overtaken (a no outlives a reading)."""
    found = [
        one
        for one in picture.rests
        if (one.item, one.position) == due.at
        and (one.because == "no" or due.measured_on is None or one.from_on >= due.measured_on)
    ]
    return max(found, key=lambda one: one.from_on, default=None)


def _told_since(picture: CarPicture, due: DueItem, day: date) -> bool:
    return any(
        due.at in one.items and one.vehicle == picture.vehicle and picture.day(one.at) >= day for one in picture.invites
    )
