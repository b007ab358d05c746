"""Delete a customer for the owner: names, numbers and texts go, readings stay without a person.

1. It is looked at what stands: a booking, a request, a symptom or another alert, a car in the shop, texts that wait.
   Whoever deletes has seen it; where something else stands by then, nothing is done and it is shown again.
2. In one transaction: texts that wait are dropped, requests closed, alerts closed; a consent that stands is taken
   back, because an old file may bring the number again; then names, numbers and words go. Of the ledger the keyed
   hash, the time and the kind stay, so that a number that was stopped is stopped when it comes again.
3. A number that somebody else uses too stays theirs, with its texts.

If the process dies, nothing was deleted. A text that is being handed over is waited for by whoever asks again.
Deleted twice, the second finds nobody. Backups that were made before keep what they hold.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Literal

from followup.core.consent import ConsentEntry
from followup.core.wall import day_of
from followup.storage import consents, deletion, inbox, inspections, people, requests, seen, shops
from followup.storage.rows import Row
from followup.storage.store import Connection, Store

DID = "deleted a customer"
_STANDS = ("asked", "offered", "confirmed")
Kind = Literal["booking", "request", "symptom", "alert", "in_the_shop"]
Done = Literal["deleted", "nobody", "changed", "in_flight"]


@dataclass(frozen=True)
class Stands:
    """Something that stands: a booking at `at`, a request, a symptom, another alert (`says`), or a car in the shop."""

    kind: Kind
    row_id: int
    at: datetime | None = None
    says: str = ""


@dataclass(frozen=True)
class NumberOfTheirs:
    """A number, and who else uses it: then it stays."""

    number: str
    others: tuple[str, ...] = ()


@dataclass(frozen=True)
class DeletionPicture:
    """What a deletion would take, and what stands. `mark` is the same as long as the same stands."""

    person_id: int
    name: str | None
    numbers: tuple[NumberOfTheirs, ...]
    cars: tuple[str, ...]
    stands: tuple[Stands, ...]
    queued: int

    @property
    def mark(self) -> str:
        """Names what stands, so that a later look can tell whether it is the same."""
        return " ".join(f"{one.kind}:{one.row_id}" for one in self.stands)


@dataclass(frozen=True)
class _Whole:
    """Everything of one customer. `gone` are the phones that nobody else uses."""

    person: Row
    phones: list[Row]
    gone: list[Row]
    cars: list[Row]

    @property
    def gone_ids(self) -> list[int]:
        return [one["id"] for one in self.gone]


def look_at_deletion(store: Store, shop_id: int, person_id: int, now: datetime) -> DeletionPicture | None:
    """What deleting this customer means now; None where the shop has no such customer."""
    with store.read() as connection:
        whole = _whole(connection, shop_id, person_id)
        return _picture(connection, shop_id, whole, now) if whole else None


def delete_customer(
    store: Store, shop_id: int, person_id: int, mark: str, who: str, now: datetime, secret: str
) -> Done:
    """Delete the customer whom `who` has looked at with that mark; see the module's words."""
    with store.write() as connection:
        whole = _whole(connection, shop_id, person_id)
        if whole is None:
            return "nobody"
        for phone in whole.gone:
            consents.lock(connection, shop_id, phone["number"])
        if _picture(connection, shop_id, whole, now).mark != mark:
            return "changed"
        if deletion.is_in_flight(connection, whole.gone_ids):
            return "in_flight"
        _close_requests(connection, person_id, who, now)
        for phone in whole.gone:
            _take_consent_back(connection, shop_id, phone["number"], who, now, secret)
        deletion.forget_drafts(connection, shop_id, whole.person, {one["number"] for one in whole.phones})
        deletion.forget_person(connection, person_id, whole.gone_ids, now)
        for car in whole.cars:
            deletion.forget_in_car(connection, person_id, [one["id"] for one in whole.phones], car)
        for phone in whole.gone:
            deletion.forget_phone(connection, phone, now)
        counted = {"numbers": len(whole.gone), "cars": len(whole.cars)}
        shops.note(connection, shop_id, now, who, DID, f"person {person_id}", None, counted)
    deletion.empty_log(store.engine)
    return "deleted"


def _whole(connection: Connection, shop_id: int, person_id: int) -> _Whole | None:
    person = people.load_person(connection, shop_id, person_id)
    if person is None:
        return None
    phones = deletion.phones_ever(connection, person_id)
    gone = [one for one in phones if not deletion.others_of_phone(connection, person_id, one["id"])]
    return _Whole(person, phones, gone, deletion.cars_ever(connection, person_id))


def _picture(connection: Connection, shop_id: int, whole: _Whole, now: datetime) -> DeletionPicture:
    person_id = whole.person["id"]
    numbers = tuple(
        NumberOfTheirs(
            one["number"],
            tuple(other["name"] or "" for other in deletion.others_of_phone(connection, person_id, one["id"])),
        )
        for one in whole.phones
    )
    return DeletionPicture(
        person_id,
        whole.person["name"],
        numbers,
        tuple(seen.car_words(one) for one in whole.cars),
        tuple(_stands(connection, shop_id, whole)),
        len(deletion.queued(connection, whole.gone_ids)),
    )


def _stands(connection: Connection, shop_id: int, whole: _Whole) -> list[Stands]:
    person_id = whole.person["id"]
    found = [
        Stands("booking" if row["state"] == "confirmed" else "request", row["id"], row["slot_at"])
        for row in requests.requests_of_persons(connection, [person_id])
        if row["state"] in _STANDS
    ]
    for alert in deletion.open_alerts(connection, person_id, whole.gone_ids):
        kind: Kind = "symptom" if alert["kind"].startswith("symptom") else "alert"
        found.append(Stands(kind, alert["id"], alert["raised_at"], alert["says"]))
    for phone in whole.gone:
        is_told = any(one.kind == "symptom" for one in found)
        if inbox.conversation_of(connection, phone["id"])[0].get("open_symptom") and not is_told:
            found.append(Stands("symptom", phone["id"]))
    cars = {one["id"]: seen.car_words(one) for one in whole.cars}
    for visit in inspections.open_visits(connection, shop_id):
        if visit["vehicle_id"] in cars:
            found.append(Stands("in_the_shop", visit["id"], visit["opened_at"], cars[visit["vehicle_id"]]))
    return found


def _close_requests(connection: Connection, person_id: int, who: str, now: datetime) -> None:
    for row in requests.requests_of_persons(connection, [person_id]):
        if row["state"] in _STANDS:
            requests.change_request(connection, row, now, who, "closed", closed_because=deletion.BECAUSE)


def _take_consent_back(connection: Connection, shop_id: int, number: str, who: str, now: datetime, secret: str) -> None:
    """Nobody who asked to be deleted is texted because an old file brings the number again."""
    if not consents.standing_of(connection, shop_id, number, secret).covers:
        return
    zone = shops.load_shop(connection, shop_id).zone
    entry = ConsentEntry(number, "taken_back", (), now, day_of(now, zone), "deletion", because=deletion.BECAUSE)
    consents.append(connection, shop_id, entry, secret, who)
