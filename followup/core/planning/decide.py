"""The decision for one car, and for all cars of one phone: one text at most, or every reason why not."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from datetime import datetime, timedelta

from followup.core.planning.best_hour import leaving
from followup.core.planning.candidate import Candidate
from followup.core.planning.draw import drawn, left_out
from followup.core.planning.hours import may_leave, valid_until
from followup.core.planning.item_stops import calls_to_make, item_stop
from followup.core.planning.paced import waits_for_room
from followup.core.planning.picture import Because, CarPicture, Decision, EarlierInvite, PhoneTask, PlannedText
from followup.core.planning.send_rule import candidates, items_left_out
from followup.core.planning.spacing import too_often, tries_so_far, try_again_days
from followup.core.planning.stops import stops_against
from followup.core.text import reason

# What an advisor calls about where the line takes no texts.
WORTH_A_CALL = ("recall", "missed_visit", "due_work")
# What leaves at the first moment that is allowed, whatever hour promises more answers; and what is drawn of the others:
# the group of a text, its hour, its minute.
NOT_KEPT_WAITING = frozenset({"recall"})
DRAWS = ("group", "hour", "minute")
PRESSING = (
    "recall", "missed_visit", "after_visit", "set_change", "due_work", "free_service", "winter_battery",
    "winter_top_off", "long_unseen", "odometer_question",
)  # fmt: skip


def decide(picture: CarPicture, now: datetime) -> Decision:
    """What to text about this car now (aware UTC): at most one invite, or why not; and calls for the phone list.

    It depends on nothing but its arguments: planned twice it is the same text with the same key. The first candidate
    that nothing stops wins; why the more pressing ones before it do not leave stands in `why_not`.
    """
    found = candidates(picture, now)
    tasks = (
        *calls_to_make(picture, now),
        *_calls_after_tries(picture, found, now),
        *_calls_instead(picture, found, now),
    )
    why_not = list(items_left_out(picture, now))
    for candidate in found:
        stops = list(stops_of(picture, candidate, now))
        text = None if stops else _planned(picture, candidate, now)
        if text:
            return Decision(text, tuple(dict.fromkeys(why_not)), tasks)
        why_not += stops
    if not found and not why_not:
        why_not.append(_nothing_due(picture))
    return Decision(None, tuple(dict.fromkeys(why_not)), tasks)


def decide_for_phone(pictures: Iterable[CarPicture], now: datetime) -> tuple[tuple[str, Decision], ...]:
    """The decisions for all cars of one phone, (vehicle, decision) in the order given: the most pressing car's text
    alone is planned, since a phone gets one invite at a time."""
    decided = [(picture.vehicle, decide(picture, now)) for picture in pictures]
    texts = [one.text for _, one in decided if one.text]
    first = min(texts, key=_pressing, default=None)
    other = Because("other_car", "another car of this phone is more pressing; one invite a phone at a time")
    return tuple(
        (vehicle, one if one.text in (None, first) else Decision(None, (*one.why_not, other), one.phone_tasks))
        for vehicle, one in decided
    )


def still_wanted(text: PlannedText, picture: CarPicture, planned_at: datetime, now: datetime) -> Because | None:
    """Asked once more before it leaves: why the planned invite is not wanted any more, or None.

    Spacing and caps are not asked again: they were kept when it was planned.
    """
    others = tuple(one for one in picture.invites if not _is_same(one, text))
    picture = replace(picture, invites=others)
    for stop in stops_against(picture, text.reason, now):
        return stop
    verdict = may_leave(text.kind, now, picture.shop, picture.where)
    if not verdict.may:
        return Because(verdict.rule, verdict.says)
    if now >= text.valid_until:
        return Because("too_old", "it could not leave in time")
    for due in (one for one in picture.due if one.at in text.items):
        if due.measured_on and due.measured_on > picture.day(planned_at):
            return Because("measured_again", f"{due.item} was measured again on {due.measured_on}")
        item_rests = item_stop(picture, due, now)
        if item_rests:
            return item_rests
    if all((one.reason, one.raised_by) != (text.reason, text.raised_by) for one in candidates(picture, now)):
        return Because("reason_ended", "the reason for it no longer stands")
    return None


def _is_same(earlier: EarlierInvite, text: PlannedText) -> bool:
    mine = (text.reason, text.raised_by, text.try_number)
    return (earlier.reason, earlier.raised_by, earlier.try_number) == mine


def stops_of(picture: CarPicture, candidate: Candidate, now: datetime) -> Iterable[Because]:
    """All that stops an invite for that reason now."""
    yield from stops_against(picture, candidate.reason, now)
    drawn = left_out(picture, candidate.reason, picture.day(now), is_legal=candidate.is_legal)
    if drawn:
        yield drawn
    yield from too_often(picture, candidate.reason, candidate.raised_by, now, is_legal=candidate.is_legal)
    yield from waits_for_room(picture, candidate.reason, now, is_legal=candidate.is_legal)


def _planned(picture: CarPicture, candidate: Candidate, now: datetime) -> PlannedText | None:
    kind = reason(candidate.reason).kind
    tries = len(tries_so_far(picture, candidate.reason, candidate.raised_by))
    waits = candidate.is_legal or candidate.reason in NOT_KEPT_WAITING
    found = leaving(
        kind, now, picture.shop, picture.where, None if waits else picture.hour,
        *(drawn(f"{what} of {candidate.reason} {candidate.raised_by} {tries}", picture.phone.id) for what in DRAWS),
    )  # fmt: skip
    until = None if found is None else valid_until(kind, found.at)
    if found is None or until is None:
        return None
    return PlannedText(
        kind=kind,
        reason=candidate.reason,
        raised_by=candidate.raised_by,
        try_number=tries + 1,
        phone_id=picture.phone.id,
        person_id=picture.person.id,
        vehicle=picture.vehicle,
        items=candidate.items,
        leaves_at=found.at,
        valid_until=until,
        because=candidate.says,
        is_legal=candidate.is_legal,
        chance=candidate.chance,
        advised=candidate.advised,
        # Once: whoever did not tell it with the first text is not asked again with the second.
        asks_odometer=candidate.reason == "due_work" and tries == 0 and picture.is_odometer_asked_along,
        leaving=found,
    )


def _calls_after_tries(picture: CarPicture, found: Iterable[Candidate], now: datetime) -> Iterable[PhoneTask]:
    """Items at their legal limit: after the second text went unanswered an advisor calls."""
    for candidate in found:
        if not candidate.is_legal or any(stops_against(picture, candidate.reason, now)):
            continue
        tries = tries_so_far(picture, candidate.reason, candidate.raised_by)
        wait = timedelta(days=try_again_days(picture, is_legal=True))
        if len(tries) >= picture.shop.rules.tries and now >= tries[-1].at + wait:
            key = f"unanswered {candidate.raised_by}"
            yield PhoneTask(key, f"told {len(tries)} times without an answer: {candidate.says}", candidate.items)


def _calls_instead(picture: CarPicture, found: Iterable[Candidate], now: datetime) -> Iterable[PhoneTask]:
    """A line that takes no texts is called instead, where nothing but that and a consent for texts is missing."""
    for candidate in found:
        if candidate.reason not in WORTH_A_CALL:
            continue
        stops = {one.rule: one for one in stops_against(picture, candidate.reason, now)}
        line = stops.get("landline") or stops.get("bad_number")
        if line and set(stops) <= {"landline", "bad_number", "no_consent"} and not picture.consent.is_stopped:
            yield PhoneTask(f"no text {candidate.raised_by}", f"{line.says}: {candidate.says}", candidate.items)


def _pressing(text: PlannedText) -> tuple[bool, int, float, str]:
    return not text.is_legal, PRESSING.index(text.reason), -text.chance, text.vehicle


def _nothing_due(picture: CarPicture) -> Because:
    rules = picture.shop.rules
    days = [one.likely_on for one in picture.due if one.likely_on and not one.is_free_top_off]
    ahead = f"; the nearest is likely due around {min(days):%B %Y}" if days else ""
    worn = any(one.chance_near is not None for one in picture.due)
    needed = f"nothing reaches {rules.send_at_chance:.0%} within {rules.lead_days} days"
    if worn:
        needed += f" (tires and pads together {rules.send_worn_at_chance:.0%}, "
        needed += f"and {rules.near_at_chance:.0%} near their limit)"
    return Because("not_due", f"{needed}{ahead}")
