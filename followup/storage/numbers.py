"""All that decides about one number, read from the store as the plain value of `core/planning/picture.py`."""

from __future__ import annotations

from collections.abc import Collection, Iterable
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import Connection

from followup.core.consent import ConsentStanding
from followup.core.conversation.state import PERSON_STAYS
from followup.core.customer import Phone
from followup.core.planning.picture import EarlierInvite, NumberPicture
from followup.core.planning.state_hours import most_in_24_hours, state_of
from followup.core.shop import Shop
from followup.phone_numbers import candidate_zones
from followup.storage import alerts, consents, inbox, outbox, people
from followup.storage.rows import Row

# Caps count a year of invites; a little more keeps the first day's edge.
INVITES_SINCE = timedelta(days=400)


@dataclass(frozen=True)
class Known:
    """Rows about some numbers of a shop, by the number or by its phone's id, in one read a table."""

    phones: dict[str, Row]
    standings: dict[str, ConsentStanding]
    ties: dict[int, list[Row]]
    times: dict[int, tuple[datetime | None, datetime | None]]
    conversations: dict[int, tuple[dict[str, Any], dict[str, Any]]]
    alerts: dict[int, list[Row]]
    invites: dict[int, list[Row]]

    @property
    def persons_by_phone(self) -> dict[int, list[Row]]:
        """Persons by the phones that they use now, in the order of the store."""
        now = {phone_id: [one for one in ties if one["to_on"] is None] for phone_id, ties in self.ties.items()}
        return {phone_id: persons for phone_id, persons in now.items() if persons}


def know(
    connection: Connection,
    shop_id: int,
    wanted: Iterable[str],
    now: datetime,
    *,
    secret: str | None = None,
    kinds: Collection[str] = ("invite",),
) -> Known:
    """What the store holds of these numbers (E.164). `secret` keys the ledger's hash of numbers; what no text of these
    `kinds` asks about is not read."""
    asked = list(dict.fromkeys(wanted))
    phones = people.phones_of_numbers(connection, shop_id, asked)
    ids = [row["id"] for row in phones.values()]
    # Answers do not ask what was said before, and only invites what else was sent.
    said_with = ids if set(kinds) - {"answer"} else []
    invited = ids if "invite" in kinds else []
    since = now - INVITES_SINCE
    spoken = inbox.conversations_of_shop(connection, shop_id, said_with) if said_with else []
    return Known(
        phones=phones,
        standings=consents.standings_of(connection, shop_id, asked, secret),
        ties=people.ties_of_phones(connection, ids) if ids else {},
        times=inbox.times_of_phones(connection, ids) if ids else {},
        conversations={row["phone_id"]: (row["state"], row["thread"]) for row in spoken},
        alerts=alerts.alerts_of_phones(connection, said_with) if said_with else {},
        invites=outbox.invites_by_phone(connection, shop_id, since, now, invited) if invited else {},
    )


def number_picture(
    connection: Connection,
    shop: Shop,
    number: str,
    now: datetime,
    *,
    needs_registration: bool,
    secret: str | None = None,
    text: Row | None = None,
    known: Known | None = None,
) -> NumberPicture:
    """The number (E.164) as it stands; `text` is the one that is asked about, which does not count against itself.
    `secret` keys the ledger's hash of numbers; `known` is what was read of it in this transaction already.

    Of invites those count that left or may have left. A number that the shop does not have is one without persons.
    """
    kind = str(text["kind"]) if text else "invite"
    known = known or know(connection, shop.id, [number], now, secret=secret, kinds=(kind,))
    row, standing = known.phones.get(number), known.standings[number]
    if row is None:
        return NumberPicture(
            shop, Phone(0, number, candidate_zones(number)), standing, needs_registration=needs_registration
        )
    ties = known.ties.get(row["id"], [])
    persons = [people.person_of(one) for one in ties if one["to_on"] is None]
    written_at, unread_since = known.times.get(row["id"], (None, None))
    return NumberPicture(
        shop=shop,
        phone=people.phone_of(row),
        consent=standing,
        is_deceased=any(one.is_deceased for one in persons),
        is_fleet=any(one.is_fleet for one in persons),
        paused_until=max((one.paused_until for one in persons if one.paused_until), default=None),
        nobody_because=None if persons or not ties else str(ties[-1]["ended_because"] or "its tie ended"),
        needs_registration=needs_registration,
        written_at=written_at,
        unread_since=unread_since,
        **_for_what_we_start(connection, shop, row, now, text, known),
    )


def _for_what_we_start(
    connection: Connection, shop: Shop, phone: Row, now: datetime, text: Row | None, known: Known
) -> dict[str, Any]:
    """What answers do not ask about; what only invites ask about is left out of a text about a visit."""
    kind = text["kind"] if text else "invite"
    if kind == "answer":
        return {}
    state, _ = known.conversations.get(phone["id"], ({}, {}))
    about = known.alerts.get(phone["id"], [])
    found: dict[str, Any] = dict(thread_facts(state, about, now))
    found["open_since"] = min((one["raised_at"] for one in about if _is_serious(one)), default=None)
    found["is_frozen"] = bool(state.get("is_frozen"))
    if text and most_in_24_hours((shop.state, state_of(phone["number"]))):
        found["told_at"] = outbox.told_about(connection, text, now - timedelta(days=1))
    if kind == "invite":
        found["invites"] = tuple(_invites(known.invites.get(phone["id"], []), text))
    return found


def thread_facts(state: dict[str, Any], about: Iterable[Row], now: datetime) -> dict[str, bool]:
    """What a thread holds that stops invites: a symptom, a complaint, a person who writes in it."""
    is_open = {row["kind"] for row in about if row["closed_at"] is None}
    person_at = state.get("person_at")
    writes = bool(person_at and now - datetime.fromisoformat(person_at) < PERSON_STAYS)
    return {
        "has_open_complaint": "complaint" in is_open,
        "has_open_symptom": bool(state.get("open_symptom")) or any(kind.startswith("symptom") for kind in is_open),
        "is_with_a_person": bool(state.get("is_frozen")) or writes,
    }


def _is_serious(alert: Row) -> bool:
    return alert["closed_at"] is None and (alert["kind"] == "complaint" or alert["kind"].startswith("symptom"))


def _invites(found: Iterable[Row], text: Row | None) -> Iterable[EarlierInvite]:
    for row in found:
        if row["state"] in outbox.MAY_HAVE_LEFT and (text is None or row["id"] != text["id"]):
            yield EarlierInvite(row["reason"], row["raised_by"], row["try_no"], row["sent_at"] or row["due_at"], "")
