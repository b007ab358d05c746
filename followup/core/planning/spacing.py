"""Tries, spacing and caps: how often a phone is invited at most, whatever there is to say."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta

from followup.core.planning.picture import Because, CarPicture, EarlierInvite, NumberPicture

# Said once, never again: asking twice whether all was well, or what was missed, is nagging; a
# season or a time away is told once.
ASKED_ONCE = frozenset(
    {
        "missed_visit",
        "after_visit",
        "odometer_question",
        "set_change",
        "winter_battery",
        "winter_top_off",
        "long_unseen",
    }
)


def tries_so_far(picture: CarPicture | NumberPicture, reason_code: str, raised_by: str) -> list[EarlierInvite]:
    """The invites for that very reason, oldest first."""
    made = [one for one in picture.invites if one.reason == reason_code and one.raised_by == raised_by]
    return sorted(made, key=lambda one: one.at)


def most_tries(picture: CarPicture | NumberPicture, reason_code: str) -> int:
    """How many texts that reason may have in all."""
    return 1 if reason_code in ASKED_ONCE else picture.shop.rules.tries


def try_again_days(picture: CarPicture | NumberPicture, is_legal: bool) -> int:
    """Days between the first and the second try."""
    return picture.shop.rules.try_again_days_legal if is_legal else picture.shop.rules.try_again_days


def too_often(
    picture: CarPicture | NumberPicture, reason_code: str, raised_by: str, now: datetime, *, is_legal: bool
) -> Iterator[Because]:
    """What spacing and caps say against one more invite for that reason now. `now` is aware UTC."""
    tries = tries_so_far(picture, reason_code, raised_by)
    if len(tries) >= most_tries(picture, reason_code):
        yield Because("tries", f"already told {len(tries)} times; then nothing until the next visit")
    elif tries and now < (next_on := tries[-1].at + timedelta(days=try_again_days(picture, is_legal))):
        yield Because("try_spacing", f"the next try comes from {picture.day(next_on)} on")
    yield from _phone_spacing(picture, tries, now)
    yield from _caps(picture, now)


def _phone_spacing(picture: CarPicture | NumberPicture, tries: list[EarlierInvite], now: datetime) -> Iterator[Because]:
    """One invite a phone in 14 days; only the first try of the same reason may be nearer, by its own spacing."""
    days = picture.shop.rules.invite_every_days
    last = max((one.at for one in picture.invites if one not in tries), default=None)
    if last and now < last + timedelta(days=days):
        yield Because("spacing", f"invited on {picture.day(last)}; one invite a phone in {days} days")


def _caps(picture: CarPicture | NumberPicture, now: datetime) -> Iterator[Because]:
    rules = picture.shop.rules
    for days, most in ((30, rules.invites_in_30_days), (365, rules.invites_a_year)):
        count = sum(one.at > now - timedelta(days=days) for one in picture.invites)
        if count >= most:
            yield Because(f"cap_{days}", f"{count} invites in {days} days; {most} at most")
