"""What a text that came in is read against: the thread with its phone, persons, cars, booking and open request."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from datetime import date, datetime, timedelta
from typing import Any

from followup.core.conversation import Around, Conversation
from followup.core.forecast.window import DueCurve
from followup.core.replies.contract import KnownOdometer, ReplyIn
from followup.core.shop import Shop, closed_days, is_open
from followup.core.wall import day_of, to_utc, to_wall
from followup.storage import consents, inbox, inspections, people, requests, shops, windows
from followup.storage.rows import Row
from followup.storage.store import Connection

# A booking stands until two hours after its start (reply contract).
STANDS_AFTER_START = timedelta(hours=2)
CLOSED_DAYS_AHEAD = 400


@dataclass
class Thread:
    """One conversation as it stands when a text comes in. `about` is what it is about and is kept with the state."""

    shop: Shop
    inbound: Row
    now: datetime
    state: Conversation
    about: dict[str, Any]
    phone: Row
    persons: list[Row]
    vehicles: list[Row]
    booking: Row | None
    request: Row | None
    around: Around = field(default_factory=lambda: Around(is_open=False))

    @property
    def vehicle(self) -> Row | None:
        """The car that the thread is about; None where several could be meant."""
        wanted = self.about.get("vehicle_id")
        for one in (self.request, self.booking):
            wanted = wanted or (one["vehicle_id"] if one else None)
        found = next((row for row in self.vehicles if row["id"] == wanted), None)
        return found or (self.vehicles[0] if len(self.vehicles) == 1 else None)

    @property
    def person(self) -> Row | None:
        """The person whom the thread is with; with several on a phone the first."""
        return self.persons[0] if self.persons else None

    @property
    def language(self) -> str:
        """The language that the thread is in now."""
        told = self.about.get("language") or self.phone["language"]
        return str(told or (self.person["language"] if self.person else None) or "en")

    def car_names(self) -> list[str]:
        """The customer's cars by the names that our texts use, the one under discussion first."""
        mine = self.vehicle
        rows = sorted(self.vehicles, key=lambda row: row is not mine)
        return [label for row in rows if (label := people.vehicle_of(row).label)]

    def keep(self, connection: Connection, state: Conversation) -> None:
        """Keep the state that follows."""
        kept = {
            "asked": state.asked,
            "asked_at": _iso(state.asked_at),
            "asked_before": state.asked_before,
            "questions_back": state.questions_back,
            "person_at": _iso(state.person_at),
            "open_symptom": state.open_symptom,
            "is_frozen": state.is_frozen,
        }
        inbox.keep_conversation(connection, self.shop.id, self.phone["id"], self.now, kept, self.about)


def _iso(at: datetime | None) -> str | None:
    return at.isoformat() if at else None


def _instant(text: str | None) -> datetime | None:
    return datetime.fromisoformat(text) if text else None


def open_thread(connection: Connection, row: Row, now: datetime) -> Thread:
    """Read the thread of an inbound text."""
    shop = shops.load_shop(connection, row["shop_id"])
    phone = people.load_phone(connection, shop.id, row["phone_id"])
    assert phone is not None, "an inbound text is kept with its phone"
    persons = people.persons_of_phone(connection, phone["id"])
    ids = [one["id"] for one in persons]
    asked_for = requests.requests_of_persons(connection, ids) if ids else []
    standing = [
        one
        for one in asked_for
        if one["state"] == "confirmed" and one["slot_at"] and one["slot_at"] + STANDS_AFTER_START > now
    ]
    waiting = [one for one in asked_for if one["state"] in requests.OPEN]
    kept, about = inbox.conversation_of(connection, phone["id"])
    thread = Thread(
        shop=shop,
        inbound=row,
        now=now,
        state=Conversation(),
        about=about,
        phone=phone,
        persons=persons,
        vehicles=people.vehicles_of_persons(connection, ids) if ids else [],
        booking=min(standing, key=lambda one: one["slot_at"], default=None),
        request=waiting[0] if waiting else None,
    )
    thread.state = _state(connection, thread, kept)
    thread.around = _around(connection, thread)
    return thread


def _state(connection: Connection, thread: Thread, kept: dict[str, Any]) -> Conversation:
    state = Conversation(
        asked=kept.get("asked"),
        asked_at=_instant(kept.get("asked_at")),
        asked_before=kept.get("asked_before"),
        questions_back=kept.get("questions_back", 0),
        has_booking=thread.booking is not None,
        has_open_request=thread.request is not None,
        is_stopped=consents.standing_of(connection, thread.shop.id, thread.phone["number"]).is_stopped,
        person_at=_instant(kept.get("person_at")),
        open_symptom=kept.get("open_symptom"),
        is_frozen=kept.get("is_frozen", False),
    )
    asked = state.asked_when_written(thread.inbound["received_at"])
    return state if asked == state.asked else replace(state, asked=asked)


def _around(connection: Connection, thread: Thread) -> Around:
    vehicle, rules = thread.vehicle, thread.shop.rules
    told = {(item, position) for item, position in thread.about.get("items", [])}
    rows = windows.windows_of(connection, vehicle["id"]) if vehicle else []
    today = day_of(thread.now, thread.shop.zone)
    return Around(
        is_open=is_open(thread.shop, thread.now),
        is_past_limit=any(_is_at_limit(row, today) for row in rows if (row["item"], row["position"]) in told),
        is_run_flat=bool(vehicle and people.vehicle_of(vehicle).run_flat),
        is_stop_confirmed=thread.inbound["raw"].get("caught") == "stop",
        ask_below_certainty=rules.ask_below_certainty,
        hand_over_below_certainty=rules.hand_over_below_certainty,
    )


def _is_at_limit(row: Row, today: date) -> bool:
    body = row["body"]
    return bool(body["is_past"]) or DueCurve.from_json(body["curve"]).chance((today - row["as_of"]).days) >= 0.5


def reply_in(connection: Connection, thread: Thread) -> ReplyIn:
    """The text with its context, by the reply contract."""
    # As it was meant when it was written: "tomorrow" of a text that was fetched late is another day.
    shop, wall = thread.shop, to_wall(min(thread.inbound["received_at"], thread.now), thread.shop.zone)
    booked_at = thread.booking["slot_at"] if thread.booking else _asked_for_at(thread)
    booked = to_wall(booked_at, shop.zone) if booked_at else None
    offered = [datetime.fromisoformat(one) for one in thread.about.get("offered", [])]
    about = thread.about.get("day")
    return ReplyIn(
        text=thread.inbound["body"],
        now=wall.replace(microsecond=0),
        zone=shop.zone,
        hours=shop.rules.open_hours,
        closed_on=closed_days(shop, wall.date(), wall.date() + timedelta(days=CLOSED_DAYS_AHEAD)),
        offered=tuple(offered),
        asked=thread.state.asked,  # type: ignore[arg-type]  # only what the contract knows is ever asked
        about=date.fromisoformat(about) if about else None,
        booked=booked,
        cars=tuple(thread.car_names()),
        odometer=last_odometer(connection, thread.vehicle["id"]) if thread.vehicle else None,
        order="day-first" if shop.order == "day-first" else "month-first",
        language=None,
    )


def _asked_for_at(thread: Thread) -> datetime | None:
    """The time of a request that is only asked for: to the customer, who is asked nothing more, it is what `cancel it`
    and `make it Friday` are about; the conversation knows that no booking stands."""
    if thread.request is None or thread.state.asked is not None:
        return None
    wanted = [one for one in thread.request["wanted"] if one["grain"] == "time" and not one["start"].startswith("T")]
    at = thread.request["slot_at"]
    if at is None and len(wanted) == 1:
        at = to_utc(datetime.fromisoformat(wanted[0]["start"]), thread.shop.zone)
    return at if at and at + STANDS_AFTER_START > thread.now else None


def last_odometer(connection: Connection, vehicle_id: int) -> KnownOdometer | None:
    """The last known reading of a car, with the distance a day that its forecast expects."""
    rows = inspections.bodies_of_vehicle(connection, vehicle_id)
    known = [(row["inspected_on"], row["odometer_miles"]) for row in rows if row["odometer_miles"] is not None]
    known += [(row["on"], row["miles"]) for row in inspections.odometers_told(connection, vehicle_id)]
    if not known:
        return None
    on, value = max(known)
    paces = [
        pace
        for row in windows.windows_of(connection, vehicle_id)
        if (pace := row["body"]["because"]["distance_per_day"])
    ]
    return KnownOdometer(value=value, unit="mi", on=on, per_day=paces[0] if paces else None)
