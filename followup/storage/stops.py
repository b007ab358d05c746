"""Take back the consent of a number: one way for a text, the counter, the phone, an e-mail and a provider's error;
and what follows where a number takes no texts.

The line of the ledger, what is queued, and what a person has to settle by phone change in one transaction.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, datetime

from sqlalchemy import Connection

from followup.core.consent import ConsentEntry
from followup.storage import alerts, consents, inbox, outbox, people, requests
from followup.storage.rows import Row

QUEUE_DROPPED = "the customer stopped the texts"
_STANDING = ("asked", "offered", "confirmed")


def take_back(connection: Connection, shop_id: int, entry: ConsentEntry, secret: str, kept_by: str) -> None:
    """Keep the stop and drop all that is queued for the number; nobody is told of what stands (`list_what_stands`)."""
    consents.append(connection, shop_id, entry, secret, kept_by)
    outbox.drop_planned(connection, shop_id, QUEUE_DROPPED, number=entry.number)


def narrow(connection: Connection, shop_id: int, entry: ConsentEntry, secret: str, kept_by: str) -> None:
    """Keep what was taken back of it; an invite that is queued finds that out as it leaves, and is dropped now."""
    consents.append(connection, shop_id, entry, secret, kept_by)
    outbox.drop_planned(connection, shop_id, "the customer wants fewer texts", number=entry.number, kinds=("invite",))


def take_back_for_provider(
    connection: Connection, shop_id: int, number: str, now: datetime, on: date, secret: str
) -> None:
    """The provider keeps the number as opted out: a stop like any other."""
    because = "the provider keeps it opted out"
    entry = ConsentEntry(number, "taken_back", (), now, on, "provider", because=because)
    take_back(connection, shop_id, entry, secret, "provider")
    list_what_stands(connection, shop_id, number, now)


def mark_bad(connection: Connection, text: Row, because: str, now: datetime) -> None:
    """A provider called the number of a text bad: nothing more leaves to it, and a person asks for another one."""
    if text["phone_id"] is None:
        return
    people.change_phone(connection, text["phone_id"], bad_because=because[:200])
    alerts.raise_alert(
        connection, shop_id=text["shop_id"], kind="phone_task", phone_id=text["phone_id"],
        vehicle_id=text["vehicle_id"], request_id=text["request_id"], raised_at=now, raised_by=f"bad:{text['id']}",
        says=f"the number takes no texts ({because[:120]}): ask for another, and say what the text was about",
    )  # fmt: skip


def list_what_stands(connection: Connection, shop_id: int, number: str, now: datetime) -> None:
    """A booking, a request or a symptom that stands is settled by phone, since no text may leave; the time is kept."""
    phone = people.find_phone(connection, shop_id, number)
    if phone is None:
        return
    for says, request in _what_stands(connection, shop_id, phone, now):
        alerts.raise_alert(
            connection, shop_id=shop_id, kind="phone_task", phone_id=phone["id"],
            person_id=request["person_id"] if request else None, vehicle_id=request["vehicle_id"] if request else None,
            request_id=request["id"] if request else None, raised_at=now, says=says,
            raised_by=f"stop:{phone['id']}:{now.isoformat()}:{request['id'] if request else 'symptom'}",
        )  # fmt: skip


def _what_stands(connection: Connection, shop_id: int, phone: Row, now: datetime) -> Iterator[tuple[str, Row | None]]:
    persons = people.persons_of_phone(connection, phone["id"])
    booked = requests.requests_of_persons(connection, [one["id"] for one in persons]) if persons else []
    for row in booked:
        is_ahead = row["state"] != "confirmed" or (row["slot_at"] and row["slot_at"] > now)
        if row["state"] in _STANDING and is_ahead:
            yield "stopped the texts while a booking stands: settle it by phone, the time is kept", row
    state, _ = inbox.conversation_of(connection, phone["id"])
    if state.get("open_symptom"):
        yield "stopped the texts while a symptom is open: call", None
