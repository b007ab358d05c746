"""Every condition of a car that stops an invite, each one function with its own words. None = it does not stop.

What binds the number, whatever the car, is `number_rules.py` and comes first; what rests a single item is
`item_stops.py`. Source: the trade rules of this project.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta

from followup.core.planning.hours import Where, next_moment
from followup.core.planning.number_rules import about_reason, stops_of_number
from followup.core.planning.picture import Because, CarPicture
from followup.core.shop import Shop

Stop = Callable[[CarPicture, datetime], Because | None]
# A confirmed booking counts as standing until somebody wrote down whether it was kept, a day at most.
BOOKING_STANDS_FOR = timedelta(days=1)


def tie_is_over(picture: CarPicture, now: datetime) -> Because | None:
    """Sold, traded, totaled; or told by the customer and not looked at yet."""
    if picture.is_tie_over:
        return Because("gone", "the car is no longer this person's")
    if picture.is_tie_held:
        return Because("stranger", "they say the number or the car is not theirs: a person looks first")
    return None


def visit_is_open(picture: CarPicture, now: datetime) -> Because | None:
    """No invite while the car is in the shop."""
    if any(visit.opened_at <= now and not visit.closed_at for visit in picture.visits):
        return Because("visit_open", "the car is in the shop")
    return None


def visit_just_closed(picture: CarPicture, now: datetime) -> Because | None:
    """No invite for 14 days after a visit, 30 after one with a complaint."""
    visit = picture.last_closed()
    if visit is None or visit.closed_at is None:
        return None
    rules, opened_on = picture.shop.rules, picture.day(visit.opened_at)
    complained = picture.complained_on is not None and picture.complained_on >= opened_on
    days = rules.rest_after_complaint_days if complained else rules.rest_after_visit_days
    since = (picture.day(now) - picture.day(visit.closed_at)).days
    if since < days:
        after = "a visit with a complaint" if complained else "a visit"
        return Because("just_closed", f"{since} days after {after}; invites rest for {days}")
    return None


def is_booked(picture: CarPicture, now: datetime) -> Because | None:
    """Booked or asked for by any way: text, phone, counter."""
    for booking in picture.bookings:
        if booking.state in ("asked", "offered"):
            return Because("booked", "a booking was asked for and waits for an advisor")
        ends = booking.starts_at and booking.starts_at + BOOKING_STANDS_FOR
        if booking.state == "confirmed" and (ends is None or now < ends):
            return Because("booked", "a booking stands")
    return None


STOPS_OF_CAR: tuple[Stop, ...] = (tie_is_over, visit_is_open, is_booked)


@dataclass(frozen=True)
class _Asked:
    """Where an hour fits at that instant by that shop's rules, as far as it was asked."""

    shop: Shop
    now: datetime
    fits: dict[Where, bool]


# A round of planning asks it of each reason of each phone, at one instant, of a few places: the last such is kept.
_last_asked: _Asked | None = None


def _fits_an_hour(shop: Shop, now: datetime, where: Where) -> bool:
    global _last_asked
    asked = _last_asked
    if asked is None or asked.shop is not shop or asked.now != now:
        asked = _last_asked = _Asked(shop, now, {})
    if where not in asked.fits:
        asked.fits[where] = next_moment("invite", now, shop, where) is not None
    return asked.fits[where]


def no_hour_fits(picture: CarPicture, now: datetime) -> Because | None:
    """No hour in three weeks is open in every zone where the phone may be."""
    if not _fits_an_hour(picture.shop, now, picture.where):
        return Because("hours", "no hour fits every zone where the phone may be: held and shown")
    return None


def stops_against(picture: CarPicture, reason_code: str, now: datetime) -> Iterator[Because]:
    """All that stops an invite of that reason about this car now, but for spacing, caps and single items."""
    yield from stops_of_number(about_reason(reason_code), picture.of_number, now)
    for stop in STOPS_OF_CAR:
        found = stop(picture, now)
        if found:
            yield found
    if reason_code != "after_visit":  # the one question that belongs into those days
        closed = visit_just_closed(picture, now)
        if closed:
            yield closed
    held = no_hour_fits(picture, now)
    if held:
        yield held
