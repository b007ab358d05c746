"""Look whether a number may be texted now, for a cover, and which rule or line of the ledger decides. Reads only.

What binds the number counts: the owner's switch, registration, the line, stops, consent, a death, hours, and for
invites their spacing and caps. What rests one car or one item is on `followup plan`.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

from followup.core.consent import ConsentEntry, ConsentStanding
from followup.core.customer import Person, Phone
from followup.core.planning.hours import may_leave, next_moment
from followup.core.planning.picture import Because, CarPicture, EarlierInvite
from followup.core.planning.spacing import too_often
from followup.core.planning.stops import stops_of_number
from followup.core.text import COVERS, Cover
from followup.phone_numbers import candidate_zones
from followup.storage import consents, outbox, people, shops
from followup.storage.store import Connection, Store

KIND_OF_COVER: dict[Cover, str] = {"visits": "visit", "upkeep": "invite", "offers": "invite"}
_INVITES_SINCE = timedelta(days=400)
# Spacing that binds the phone, for a reason that was never told before.
_ANY_REASON = ("due_work", "a look-up")


@dataclass(frozen=True)
class MayText:
    """Whether a text of that cover may leave at that instant; `because` names every rule against it, or those that
    allow it. `next_at` (aware UTC) is the next moment at which hours and rules allow it; None where a person has to
    act first."""

    cover: Cover
    may: bool
    because: tuple[Because, ...]
    next_at: datetime | None


@dataclass(frozen=True)
class NumberSeen:
    """All that decides about a number. `persons` use it now; `is_known` where the shop has it."""

    number: str
    is_known: bool
    persons: tuple[str, ...]
    line: str
    zones: tuple[str, ...]
    standing: ConsentStanding
    ledger: tuple[ConsentEntry, ...]
    answers: tuple[MayText, ...]


def look_at_may_text(
    store: Store, shop_id: int, number: str, at: datetime, *, needs_registration: bool = False
) -> NumberSeen:
    """What stands for that number (E.164) at that instant, for every cover."""
    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
        row = people.find_phone(connection, shop_id, number)
        rows = people.persons_of_phone(connection, row["id"]) if row else []
        phone = people.phone_of(row) if row else Phone(0, number, candidate_zones(number))
        ledger = tuple(consents.ledger(connection, shop_id, number))
        standing = consents.standing_of(connection, shop_id, number)
        invites = _invites(connection, shop_id, phone.id, at)
    persons = [people.person_of(one) for one in rows]
    # A death of one who uses the phone turns it all off, as everywhere.
    who = next((one for one in persons if one.is_deceased), persons[0] if persons else Person(0, ""))
    picture = CarPicture(shop, phone, who, "", standing, invites=invites, needs_registration=needs_registration)
    return NumberSeen(
        number=number, is_known=row is not None, persons=tuple(one.name or "no name" for one in persons),
        line=phone.line, zones=phone.zones, standing=standing, ledger=ledger,
        answers=tuple(_answer(picture, cover, at) for cover in COVERS),
    )  # fmt: skip


def _answer(picture: CarPicture, cover: Cover, at: datetime) -> MayText:
    kind = KIND_OF_COVER[cover]
    stops = list(stops_of_number(picture, cover, at))
    if picture.person.is_fleet and kind == "invite":
        stops.append(Because("fleet", "a fleet contact gets the weekly list instead"))
    hours = may_leave(kind, at, picture.shop, picture.where)
    spacing = list(_spacing(picture, at)) if kind == "invite" else []
    against = [*stops, *spacing, *([] if hours.may else [Because(hours.rule, hours.says)])]
    if not against:
        return MayText(cover, True, (_allowed_by(picture.consent, cover), Because(hours.rule, hours.says)), at)
    return MayText(cover, False, tuple(against), None if stops else _next_moment(picture, kind, at))


def _allowed_by(standing: ConsentStanding, cover: Cover) -> Because:
    """The line of the ledger that allows it, in words."""
    entry = standing.decided_by
    told = f", last by the line of {entry.given_on.isoformat()} ({entry.how.replace('_', ' ')})" if entry else ""
    return Because("consent", f"consent for {cover} stands{told}")


def _spacing(picture: CarPicture, at: datetime) -> list[Because]:
    reason, cause = _ANY_REASON
    return list(too_often(picture, reason, cause, at, is_legal=False))


def _next_moment(picture: CarPicture, kind: str, at: datetime) -> datetime | None:
    """The next moment within hours at which spacing and caps allow it; looked for day by day, a year at most."""
    moment = next_moment(kind, at, picture.shop, picture.where)
    for _ in range(366):
        if moment is None or kind != "invite" or not _spacing(picture, moment):
            return moment
        moment = next_moment(kind, moment + timedelta(days=1), picture.shop, picture.where)
    return None


def _invites(connection: Connection, shop_id: int, phone_id: int, at: datetime) -> tuple[EarlierInvite, ...]:
    rows = outbox.invites_by_phone(connection, shop_id, at - _INVITES_SINCE, at, phone_id).get(phone_id, [])
    return tuple(
        EarlierInvite(row["reason"], row["raised_by"], row["try_no"], row["sent_at"] or row["due_at"], "")
        for row in rows
    )
