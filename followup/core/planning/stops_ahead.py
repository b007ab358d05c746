"""Until when a reason that does not lead to a text, or to a call, cannot lead to one: for `next_look.py`.

What stops an invite either waits for a change, or is over at an instant that the rule knows. All that stop it must be
over; of a rule that is not listed here it is not known, so that it is asked again at the next look.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from datetime import UTC, date, datetime, timedelta

from followup.core.planning.candidate import Candidate
from followup.core.planning.decide import WORTH_A_CALL, stops_of
from followup.core.planning.picture import Because, CarPicture
from followup.core.planning.spacing import tries_so_far, try_again_days
from followup.core.planning.stops import BOOKING_STANDS_FOR, stops_against
from followup.core.wall import start_of

NEVER = datetime.max.replace(tzinfo=UTC)
# What lasts until something is changed. A stop that is asked about becomes one that is not.
_LASTING = frozenset(
    {
        "stopped_by_owner", "registration", "bad_number", "landline", "reassigned", "nobody", "stop", "confirm_stop",
        "deceased", "fleet", "symptom", "complaint", "no_consent", "visit_open", "tries",
    }
)  # fmt: skip
_LINES, _NO_TEXT = {"landline", "bad_number"}, {"landline", "bad_number", "no_consent"}


def ends_of(picture: CarPicture, candidate: Candidate, now: datetime) -> list[datetime]:
    """The first instants at which this reason may lead to a text and to calls; `now` where that is not known."""
    against = list(stops_of(picture, candidate, now))
    found = [_end(picture, candidate, against, now), *_calls(picture, candidate, now)]
    return [at for at in found if at < NEVER]


def _end(picture: CarPicture, candidate: Candidate, against: Iterable[Because], now: datetime) -> datetime:
    """When all of these are over."""
    return max((max(_over(picture, candidate, one.rule, now), now) for one in against), default=now)


def _calls(picture: CarPicture, candidate: Candidate, now: datetime) -> Iterable[datetime]:
    against = list(stops_against(picture, candidate.reason, now))
    if candidate.is_legal:
        tries = tries_so_far(picture, candidate.reason, candidate.raised_by)
        if len(tries) >= picture.shop.rules.tries:
            waited = tries[-1].at + timedelta(days=try_again_days(picture, is_legal=True))
            if against or waited > now:
                yield max(_end(picture, candidate, against, now), waited)
    others = [one for one in against if one.rule not in _NO_TEXT]
    if candidate.reason in WORTH_A_CALL and others and any(one.rule in _LINES for one in against):
        yield _end(picture, candidate, others, now)


def _over(picture: CarPicture, candidate: Candidate, rule: str, now: datetime) -> datetime:
    if rule in _LASTING:
        return NEVER
    known = _ENDS.get(rule)
    return known(picture, candidate, now) if known else now


def _paused(picture: CarPicture, candidate: Candidate, now: datetime) -> datetime:
    until = picture.person.paused_until
    return start_of(until, picture.shop.zone) if until else now


def _booked(picture: CarPicture, candidate: Candidate, now: datetime) -> datetime:
    ends = [now]
    for one in picture.bookings:
        if one.state in ("asked", "offered") or (one.state == "confirmed" and one.starts_at is None):
            return NEVER
        if one.state == "confirmed" and one.starts_at:
            ends.append(one.starts_at + BOOKING_STANDS_FOR)
    return max(ends)


def _just_closed(picture: CarPicture, candidate: Candidate, now: datetime) -> datetime:
    """After the shorter of both rests: a complaint may be settled meanwhile."""
    visit, rules = picture.last_closed(), picture.shop.rules
    if visit is None or visit.closed_at is None:
        return now
    days = min(rules.rest_after_visit_days, rules.rest_after_complaint_days)
    return start_of(picture.day(visit.closed_at) + timedelta(days=days), picture.shop.zone)


def _next_try(picture: CarPicture, candidate: Candidate, now: datetime) -> datetime:
    tries = tries_so_far(picture, candidate.reason, candidate.raised_by)
    return tries[-1].at + timedelta(days=try_again_days(picture, candidate.is_legal)) if tries else now


def _spaced(picture: CarPicture, candidate: Candidate, now: datetime) -> datetime:
    tries = tries_so_far(picture, candidate.reason, candidate.raised_by)
    others = [one.at for one in picture.invites if one not in tries]
    return max(others) + timedelta(days=picture.shop.rules.invite_every_days) if others else now


def _capped(days: int, most: Callable[[CarPicture], int]) -> Callable[[CarPicture, Candidate, datetime], datetime]:
    def over(picture: CarPicture, candidate: Candidate, now: datetime) -> datetime:
        made = sorted((one.at for one in picture.invites), reverse=True)
        allowed = most(picture)
        if allowed < 1:
            return NEVER
        return made[allowed - 1] + timedelta(days=days) if len(made) >= allowed else now

    return over


def _drawn_anew(picture: CarPicture, candidate: Candidate, now: datetime) -> datetime:
    return start_of(date(picture.day(now).year + 1, 1, 1), picture.shop.zone)


_ENDS: dict[str, Callable[[CarPicture, Candidate, datetime], datetime]] = {
    "paused": _paused,
    "booked": _booked,
    "just_closed": _just_closed,
    "try_spacing": _next_try,
    "spacing": _spaced,
    "cap_30": _capped(30, lambda picture: picture.shop.rules.invites_in_30_days),
    "cap_365": _capped(365, lambda picture: picture.shop.rules.invites_a_year),
    "without_invites": _drawn_anew,
}
