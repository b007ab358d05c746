"""Look whether a number may be texted now, for every cover, and which rule or line of the ledger decides. Reads only.

What binds the number counts, by the same function that planning and sending ask (`core/planning/number_rules.py`).
What rests one car or one item is on `followup plan`.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date, datetime

from followup.core.consent import ConsentEntry, ConsentStanding
from followup.core.planning.number_rules import About, MayText, may_text
from followup.core.planning.picture import NumberPicture
from followup.core.planning.state_hours import BY_STATE
from followup.core.text import COVERS, Cover, Kind
from followup.storage import consents, numbers, people, requests, shops
from followup.storage.store import Store

KIND_OF_COVER: dict[Cover, Kind] = {"visits": "visit", "upkeep": "invite", "offers": "invite"}


@dataclass(frozen=True)
class NumberSeen:
    """All that decides about a number. `persons` use it now; `is_known` where the shop has it.

    `answers` are by cover; `to_them` is for an answer to a text that they would write now. `states` are rows that
    narrow the hours. `reassigned` is what the check of reassigned numbers said, asked as of `reassigned_asked_on`.
    """

    number: str
    is_known: bool
    phone_id: int | None
    persons: tuple[str, ...]
    line: str
    zones: tuple[str, ...]
    states: tuple[str, ...]
    standing: ConsentStanding
    ledger: tuple[ConsentEntry, ...]
    answers: dict[Cover, MayText]
    to_them: MayText
    reassigned: str | None = None
    reassigned_asked_on: date | None = None
    held_because: str | None = None


def look_at_may_text(
    store: Store,
    shop_id: int,
    number: str,
    at: datetime,
    *,
    needs_registration: bool = False,
    secret: str | None = None,
) -> NumberSeen:
    """What stands for that number (E.164) at that instant, for every cover. `secret` keys the hash of the ledger."""
    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
        picture = numbers.number_picture(
            connection, shop, number, at, needs_registration=needs_registration, secret=secret
        )
        row = people.find_phone(connection, shop_id, number)
        persons = people.persons_of_phone(connection, row["id"]) if row else []
        was_asked_for = row is not None and requests.is_asked_for_by_text(connection, row["id"])
        ledger = tuple(consents.ledger(connection, shop_id, number, secret))
    return NumberSeen(
        number=number,
        is_known=row is not None,
        phone_id=row["id"] if row else None,
        persons=tuple(one["name"] or "no name" for one in persons),
        line=picture.phone.line,
        zones=picture.phone.zones,
        states=_states(picture),
        standing=picture.consent,
        ledger=ledger,
        answers={
            cover: may_text(About(KIND_OF_COVER[cover], cover, was_asked_for=was_asked_for), picture, at)
            for cover in COVERS
        },
        to_them=may_text(About("answer", None), replace(picture, written_at=at, unread_since=None), at),
        reassigned=row["reassigned"] if row else None,
        reassigned_asked_on=row["reassigned_asked_on"] if row else None,
        held_because=picture.phone.held_because,
    )


def _states(picture: NumberPicture) -> tuple[str, ...]:
    states = dict.fromkeys((picture.shop.state, picture.where.state))
    return tuple(BY_STATE[one].says for one in states if one in BY_STATE)
