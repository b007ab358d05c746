"""Settle a number by a person's word: whose it is while it is held, and what its line can do.

- Still theirs: it is no longer held; the consent that stood stands.
- Not theirs: its ties end, and its consent is taken back, since nobody who has the number now ever agreed.
- A landline, or a fixed line over the internet, gets no text but stands on the phone list; a line that can be texted
  loses what a provider said against it.

Each is one transaction with its line of the audit trail.
"""

from __future__ import annotations

from datetime import datetime
from typing import Literal

from followup.core.consent import ConsentEntry
from followup.core.wall import day_of
from followup.storage import alerts, people, shops, stops
from followup.storage.rows import Row
from followup.storage.store import Connection, Store

LINES = {"mobile": "takes texts", "landline": "is a landline", "fixed_voip": "is a fixed line over the internet"}
Line = Literal["mobile", "landline", "fixed_voip"]


def settle_held(
    store: Store, shop_id: int, phone_id: int, is_theirs: bool, staff_id: int, who: str, now: datetime, secret: str
) -> bool:
    """Say whose a held number is; False where it is not held (any more)."""
    with store.write() as connection:
        phone = people.load_phone(connection, shop_id, phone_id)
        if phone is None or not phone["held_because"]:
            return False
        people.change_phone(connection, phone_id, held_because=None)
        said = "still theirs" if is_theirs else "no longer theirs"
        if not is_theirs:
            _give_up(connection, shop_id, phone, who, now, secret)
        shops.note(connection, shop_id, now, who, f"said that a number is {said}", f"phone {phone_id}")
        for alert in alerts.alerts_of_phone(connection, phone_id):
            if alert["kind"] == "tie" and alert["closed_at"] is None and alert["raised_by"].startswith("reassigned:"):
                alerts.acknowledge(connection, shop_id, alert["id"], staff_id, now)
                alerts.close(connection, shop_id, alert["id"], said, now)
    return True


def _give_up(connection: Connection, shop_id: int, phone: Row, who: str, now: datetime, secret: str) -> None:
    on = day_of(now, shops.load_shop(connection, shop_id).zone)
    because = "the number belongs to somebody else"
    entry = ConsentEntry(phone["number"], "taken_back", (), now, on, "reassigned", because=because)
    stops.take_back(connection, shop_id, entry, secret, who)
    stops.list_what_stands(connection, shop_id, phone["number"], now)
    people.end_phone_ties(connection, phone["id"], on, because)


def say_what_line(store: Store, shop_id: int, phone_id: int, line: Line, who: str, now: datetime) -> bool:
    """Say what the number's line can do; False where the shop has no such phone."""
    with store.write() as connection:
        phone = people.load_phone(connection, shop_id, phone_id)
        if phone is None:
            return False
        bad = None if line == "mobile" else phone["bad_because"]
        people.change_phone(connection, phone_id, line=line, bad_because=bad)
        before = {"line": phone["line"], "bad_because": phone["bad_because"]}
        shops.note(
            connection, shop_id, now, who, f"said that a number {LINES[line]}", f"phone {phone_id}", before,
            {"line": line, "bad_because": bad},
        )  # fmt: skip
    return True
