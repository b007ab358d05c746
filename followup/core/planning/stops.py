"""Every condition that stops an invite, each one function with its own words. None = it does not stop.

Stops of the shop and the phone come first, then those of the person and the car; what rests a single item is
`item_stops.py`. Sources: the trade rules of this project; 47 CFR 64.1200(a)(10) for the stop.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import datetime, timedelta

from followup.core.planning.hours import next_moment
from followup.core.planning.picture import Because, CarPicture
from followup.core.text import Cover, reason

Stop = Callable[[CarPicture, datetime], Because | None]
CANNOT_RECEIVE = ("landline", "fixed_voip")
# A confirmed booking counts as standing until somebody wrote down whether it was kept, a day at most.
BOOKING_STANDS_FOR = timedelta(days=1)


def sending_is_stopped(picture: CarPicture, now: datetime) -> Because | None:
    """The owner's switch stops invites and visit texts of the whole shop."""
    if picture.shop.rules.is_sending_stopped or picture.shop.rules.is_everything_off:
        return Because("stopped_by_owner", "the owner has stopped all texts of the shop")
    return None


def registration_missing(picture: CarPicture, now: datetime) -> Because | None:
    """US numbers get nothing through a provider before the carriers' registration stands in the machine's settings;
    what the shop's page notes of it opens nothing."""
    if picture.needs_registration and picture.phone.number.startswith("+1"):
        return Because("registration", "the shop's registration with the carriers is not in the settings")
    return None


def number_cannot_receive(picture: CarPicture, now: datetime) -> Because | None:
    """Landlines, fixed VoIP and numbers that a provider called bad go to the phone list."""
    if picture.phone.bad_because:
        return Because("bad_number", f"the number cannot be texted: {picture.phone.bad_because}")
    if picture.phone.line in CANNOT_RECEIVE:
        return Because("landline", "the number is a landline: call instead")
    return None


def stop_stands(picture: CarPicture, now: datetime) -> Because | None:
    """A stop binds the number: all cars, persons and covers."""
    if picture.consent.is_stopped:
        return Because("stop", "the number asked us to stop texting")
    return None


def is_deceased(picture: CarPicture, now: datetime) -> Because | None:
    """A death turns every text off."""
    return Because("deceased", "every text is off for this person") if picture.person.is_deceased else None


def is_fleet(picture: CarPicture, now: datetime) -> Because | None:
    """A fleet's contact gets one list a week instead of invites."""
    return Because("fleet", "a fleet contact gets the weekly list instead") if picture.person.is_fleet else None


def is_paused(picture: CarPicture, now: datetime) -> Because | None:
    """An advisor paused the customer up to a day."""
    until = picture.person.paused_until
    if until and picture.day(now) < until:
        return Because("paused", f"an advisor paused invites until {until}")
    return None


def tie_is_over(picture: CarPicture, now: datetime) -> Because | None:
    """Sold, traded, totaled; or told by the customer and not looked at yet."""
    if picture.is_tie_over:
        return Because("gone", "the car is no longer this person's")
    if picture.is_tie_held:
        return Because("stranger", "they say the number or the car is not theirs: a person looks first")
    return None


def symptom_is_open(picture: CarPicture, now: datetime) -> Because | None:
    """Nobody with an open symptom is invited."""
    return Because("symptom", "a symptom is open: a person calls first") if picture.has_open_symptom else None


def complaint_is_open(picture: CarPicture, now: datetime) -> Because | None:
    """Nobody with an open complaint is invited."""
    return Because("complaint", "a complaint is open: a person calls first") if picture.has_open_complaint else None


def person_has_thread(picture: CarPicture, now: datetime) -> Because | None:
    """The machine is silent where a person writes."""
    return Because("with_a_person", "a person is writing with them now") if picture.is_with_a_person else None


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


STOPS_OF_NUMBER: tuple[Stop, ...] = (sending_is_stopped, registration_missing, number_cannot_receive, stop_stands)
STOPS_OF_CAR: tuple[Stop, ...] = (
    is_deceased,
    is_fleet,
    is_paused,
    tie_is_over,
    symptom_is_open,
    complaint_is_open,
    person_has_thread,
    visit_is_open,
    is_booked,
)


def no_consent(picture: CarPicture, cover: Cover | None) -> Because | None:
    """No consent for what this text is about (a stop has words of its own)."""
    if cover is None or picture.consent.is_stopped or picture.consent.allows(cover):
        return None
    return Because("no_consent", f"no consent for {cover}")


def no_hour_fits(picture: CarPicture, now: datetime) -> Because | None:
    """No hour in three weeks is open in every zone where the phone may be."""
    if next_moment("invite", now, picture.shop, picture.where) is None:
        return Because("hours", "no hour fits every zone where the phone may be: held and shown")
    return None


def stops_against(picture: CarPicture, reason_code: str, now: datetime) -> Iterator[Because]:
    """All that stops an invite of that reason about this car now, but for spacing, caps and single items."""
    for stop in (*STOPS_OF_NUMBER, *STOPS_OF_CAR):
        found = stop(picture, now)
        if found:
            yield found
    if reason_code != "after_visit":  # the one question that belongs into those days
        closed = visit_just_closed(picture, now)
        if closed:
            yield closed
    for last in (no_consent(picture, reason(reason_code).cover), no_hour_fits(picture, now)):
        if last:
            yield last


def stops_of_number(picture: CarPicture, cover: Cover, now: datetime) -> Iterator[Because]:
    """What stops any text of that cover to the number, whatever the car: for `followup may-text`."""
    for stop in (*STOPS_OF_NUMBER, is_deceased):
        found = stop(picture, now)
        if found:
            yield found
    missing = no_consent(picture, cover)
    if missing:
        yield missing
