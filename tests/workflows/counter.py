"""A small shop for tests of what an advisor does: one customer with a car that was inspected, and what may come of it.

Everything is made by the program's own workflows and storage, on a real database; names and numbers are invented.
"""

from __future__ import annotations

import json
from dataclasses import dataclass
from datetime import UTC, datetime
from typing import Any

from followup.core.replies.contract import ReplyIn
from followup.core.replies.understand import understand
from followup.core.shop import Shop
from followup.core.wall import to_wall
from followup.storage import alerts, inbox, outbox, people, requests, shops, staff, tables
from followup.storage.rows import Row
from followup.storage.store import Store, make_engine
from followup.transports.transport import OutgoingText, SentReceipt
from followup.workflows.forecast_windows import forecast_windows
from followup.workflows.keep_inspections import keep_inspections
from followup.workflows.settle_requests import By

# A Tuesday, 9:00 in the morning at the shop: open, and a time at which texts about a visit may leave.
NOW = datetime(2026, 11, 24, 15, 0, tzinfo=UTC)
SECRET = "only-for-tests"
NUMBER = "+13125550147"
CONSENT = {
    "covers": ["visits", "upkeep", "offers"], "given_on": "2026-01-12", "how": "tablet", "words": "I agree.",
    "words_version": "1", "language": "en", "number_is_own_and_adult": True,
}  # fmt: skip


class Wire:
    """A provider in this process, which takes every text and remembers it."""

    name, address = "wire", "http://127.0.0.1:9"

    def __init__(self) -> None:
        self.handed: list[OutgoingText] = []

    def send(self, text: OutgoingText) -> SentReceipt:
        self.handed.append(text)
        return SentReceipt(f"SM{text.public_id}", "queued")


@dataclass
class Counter:
    """The shop and its one customer; ids of their rows."""

    store: Store
    shop_id: int
    staff_id: int
    vehicle_id: int
    person_id: int
    phone_id: int

    @property
    def by(self) -> By:
        """The advisor."""
        return By(self.staff_id, "Avery Stone")

    def shop(self) -> Shop:
        """The shop with its rules."""
        with self.store.read() as connection:
            return shops.load_shop(connection, self.shop_id)

    def request(self, request_id: int) -> Row:
        """A booking request's row."""
        with self.store.read() as connection:
            found = requests.load_request(connection, self.shop_id, request_id)
        assert found is not None
        return found

    def texts(self, *states: str) -> list[Row]:
        """Texts to the customer in these states (all where none is named)."""
        with self.store.read() as connection:
            found = outbox.texts_of_phone(connection, self.phone_id)
        return [one for one in found if not states or one["state"] in states]

    def alerts(self) -> list[Row]:
        """Alerts without an outcome."""
        with self.store.read() as connection:
            return alerts.open_alerts(connection, self.shop_id)

    def write_in(self, body: str, at: datetime = NOW, meaning: Any = None) -> int:
        """Keep a text of the customer's, as if it had been read."""
        with self.store.write() as connection:
            made = inbox.keep_raw(
                connection, shop_id=self.shop_id, provider_id=f"in-{body}-{at}", number=NUMBER,
                phone_id=self.phone_id, body=body, raw={"body": body}, received_at=at, handled_at=at, meaning=meaning,
            )  # fmt: skip
        assert made is not None
        return made

    def read_in(self, body: str, at: datetime = NOW, **around: Any) -> int:
        """Keep a text of the customer's with its context and what is really read of it."""
        made = self.write_in(body, at)
        reply = ReplyIn(text=body, now=to_wall(at, self.shop().zone).replace(microsecond=0), **around)
        with self.store.write() as connection:
            read = understand(reply).model_dump(mode="json")
            inbox.keep_meaning(connection, made, reply.model_dump(mode="json"), read, "table")
        return made

    def ask(self, body: str = "Tuesday at 9 works", **values: Any) -> int:
        """A booking request by text, with its alert; the id of the request."""
        inbound_id = values.pop("inbound_id", None) or self.write_in(body)
        wanted = [{"start": "2026-12-01T09:00", "end": None, "grain": "time"}]
        values = {
            "state": "asked", "came_from": "text", "verbatim": body, "wanted": wanted, "parts": "in_stock",
            "items": [["brake_pad", "front_left"]], "hours": {"brakes": 1.0}, "inbound_id": inbound_id,
            "understood": {"meanings": ["propose"], "certainty": 0.9, "language": "en"}, **values,
        }  # fmt: skip
        with self.store.write() as connection:
            made = requests.add_request(
                connection, NOW, "customer", shop_id=self.shop_id, phone_id=self.phone_id, person_id=self.person_id,
                vehicle_id=self.vehicle_id, **values,
            )  # fmt: skip
        self.alert("request", "asked for a time", inbound_id=inbound_id, request_id=made)
        return made

    def alert(self, kind: str, says: str, **values: Any) -> int:
        """Raise an alert about the customer."""
        with self.store.write() as connection:
            made = alerts.raise_alert(
                connection, shop_id=self.shop_id, kind=kind, phone_id=self.phone_id, person_id=self.person_id,
                vehicle_id=self.vehicle_id, says=says, raised_by=f"{kind}:{says}:{values}", raised_at=NOW, **values,
            )  # fmt: skip
        assert made is not None
        return made

    def plan(self, code: str = "due_work", cause: str = "test", **values: Any) -> int:
        """A planned text to the customer."""
        values = {"facts": {"items": [], "because": "brake pads are coming due"}, **values}
        with self.store.write() as connection:
            made = outbox.plan_text(
                connection, self.shop_id, code, cause, NOW, phone_id=self.phone_id, number=NUMBER, language="en",
                person_id=self.person_id, vehicle_id=self.vehicle_id, **values,
            )  # fmt: skip
        assert made is not None
        return made

    def hold(self, code: str = "due_work", cause: str = "held") -> int:
        """A text of which nobody knows whether it went out."""
        made = self.plan(code, cause)
        with self.store.write() as connection:
            outbox.change_text(connection, made, state="held", body="Elm Street Auto: hello", attempt=1)
        return made

    def remember(self, **state: Any) -> None:
        """Set what the conversation holds."""
        with self.store.write() as connection:
            kept, thread = inbox.conversation_of(connection, self.phone_id)
            inbox.keep_conversation(connection, self.shop_id, self.phone_id, NOW, {**kept, **state}, thread)

    def conversation(self) -> dict[str, Any]:
        """What the conversation holds."""
        with self.store.read() as connection:
            return inbox.conversation_of(connection, self.phone_id)[0]


def line(name: str = "Ana Marlow", label: str = "blue wagon", **others: Any) -> str:
    """One inspection of the car as a line of the contract."""
    told = {
        "inspection": "I-1",
        "inspected_at": "2026-10-20T09:10",
        "odometer": 48210,
        "unit": "mi",
        "customer": {"id": "C-1", "name": name, "phone": NUMBER, "language": "en", "consent": CONSENT},
        "vehicle": {"id": "V-1", "label": label, "class": "car", "powertrain": "gasoline", "plate": "TEST 147",
                    "first_used_on": "2021-05-01"},
        "readings": [
            {"item": "tire_tread", "position": "front_left", "unit": "32nds", "value": 5},
            {"item": "brake_pad", "position": "front_left", "unit": "mm", "value": 4},
            {"item": "brake_pad", "position": "rear_left", "not_checked": "drum"},
            {"item": "lights", "found_as": "dim"},
        ],
        **others,
    }  # fmt: skip
    return json.dumps(told)


def fill(store: Store, shop_id: int, staff_id: int, text: str | None = None) -> Counter:
    """Bring the inspection in, forecast the car, and give the ids."""
    kept = list(keep_inspections(store, shop_id, [text or line()], NOW, "test", SECRET))
    assert [one.outcome for one in kept] == ["new"], kept
    forecast_windows(store, shop_id, NOW)
    with store.read() as connection:
        vehicle, person = (
            people.find_vehicle(connection, shop_id, "V-1"),
            people.find_person(connection, shop_id, "C-1"),
        )
        phone = people.find_phone(connection, shop_id, NUMBER)
    assert vehicle and person and phone
    return Counter(store, shop_id, staff_id, vehicle["id"], person["id"], phone["id"])


def open_counter(database_url: str) -> Counter:
    """An empty database with the shop, its advisor and the customer."""
    engine = make_engine(database_url)
    tables.metadata.create_all(engine)
    store = Store(engine)
    facts = {"name": "Elm Street Auto", "zone": "America/Chicago", "phone": "+13125550100",
             "texts_from": "+13125550101"}  # fmt: skip
    with store.write() as connection:
        shop_id = shops.add_shop(connection, NOW, "elm", facts)
        staff_id = staff.add(connection, shop_id, "avery", "Avery Stone", "advisor", "no password", NOW)
    return fill(store, shop_id, staff_id)
