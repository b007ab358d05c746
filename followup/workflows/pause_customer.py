"""Pause a customer's invites until a day, or end the pause. Answers and texts about a visit go on as they are."""

from __future__ import annotations

from datetime import date, datetime

from followup.storage import outbox, people, shops
from followup.storage.store import Store


def pause_customer(store: Store, shop_id: int, person_id: int, until: date | None, who: str, now: datetime) -> bool:
    """Pause until that day (None: end the pause); queued invites are dropped with it. False: no such customer."""
    with store.write() as connection:
        person = people.load_person(connection, shop_id, person_id)
        if person is None:
            return False
        people.change_person(connection, person_id, paused_until=until)
        if until is not None:
            for phone in people.phones_of_person(connection, person_id):
                outbox.drop_planned(
                    connection, shop_id, "an advisor paused the invites", number=phone["number"], kinds=("invite",)
                )
        before = person["paused_until"]
        shops.note(
            connection, shop_id, now, who, "paused invites" if until else "ended a pause", f"person {person_id}",
            before={"until": before.isoformat() if before else None},
            after={"until": until.isoformat() if until else None},
        )  # fmt: skip
    return True
