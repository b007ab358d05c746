"""Take a customer's consent at the counter: on the tablet by the exact words, or spoken for texts about visits alone.

1. What was ticked is held against the rules: upkeep with offers needs the person's own number and an adult.
2. In one transaction the ledger gets its line (exact words, version, language, how, who held out the tablet), the phone
   its language, and one confirmation text is planned. The same consent again on the same day changes nothing.

If the process dies before the end, nothing was kept and the customer confirms once more.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Literal

from followup.core.consent import ConsentEntry, ConsentStanding
from followup.core.phrasing import phrase_phone
from followup.core.shop import Shop
from followup.core.text import CONFIRMED_WITHIN
from followup.core.wall import day_of
from followup.phone_numbers import NotANumber, read_number
from followup.storage import consents, outbox, people, shops
from followup.storage.rows import Row
from followup.storage.store import Connection, Store
from followup.wording import LANGUAGES, ConsentWords, consent_words

Outcome = Literal["kept", "known", "stopped"]
NOT_A_NUMBER = "No such number exists: look at it again."


@dataclass(frozen=True)
class PhoneSeen:
    """A number of the person, its language and what its ledger allows now."""

    phone_id: int
    number: str
    language: str
    standing: ConsentStanding


@dataclass(frozen=True)
class PersonPicture:
    """Whose consent is asked for."""

    person_id: int
    name: str | None
    language: str
    phones: tuple[PhoneSeen, ...]


@dataclass(frozen=True)
class Ticked:
    """What the customer ticked and confirmed."""

    visits: bool
    upkeep: bool
    is_own_and_adult: bool


def look_at_person(store: Store, shop_id: int, person_id: int) -> PersonPicture | None:
    """A person with their phones; None where the shop has none of that id."""
    with store.read() as connection:
        person = people.load_person(connection, shop_id, person_id)
        if person is None:
            return None
        phones = tuple(
            PhoneSeen(
                row["id"], row["number"], row["language"] or person["language"] or "en",
                consents.standing_of(connection, shop_id, row["number"]),
            )
            for row in people.phones_of_person(connection, person_id)
        )  # fmt: skip
        return PersonPicture(person_id, person["name"], person["language"] or "en", phones)


def words_shown(store: Store, shop_id: int, language: str) -> ConsentWords:
    """The exact words of the form at that shop."""
    with store.read() as connection:
        return _words(shops.load_shop(connection, shop_id), language)


def add_number(store: Store, shop_id: int, person_id: int, written: str, now: datetime, secret: str) -> str | None:
    """Keep a number of the person as written; why not, or None. A new number starts without consent; of one that is
    known by its hash alone (`secret` keys it) a stop still stands."""
    with store.write() as connection:
        shop = shops.load_shop(connection, shop_id)
        try:
            read = read_number(written, shop.country)
        except NotANumber:
            return NOT_A_NUMBER
        if people.load_person(connection, shop_id, person_id) is None:
            return "There is no such customer."
        phone_id = people.keep_phone(connection, shop_id, read.e164, read.zones, read.line, now)
        consents.know_again(connection, shop_id, read.e164, secret)
        people.tie_phone(connection, shop_id, person_id, phone_id, day_of(now, shop.zone))
    return None


def take_on_tablet(
    store: Store,
    shop_id: int,
    phone_id: int,
    person_id: int,
    language: str,
    ticked: Ticked,
    secret: str,
    who: str,
    now: datetime,
) -> dict[str, str] | Outcome:
    """Keep what was ticked; what is wrong by field (visits, own_number), or what became of it."""
    if not ticked.visits and not ticked.upkeep:
        return {"visits": "nothing"}
    if ticked.upkeep and not ticked.is_own_and_adult:
        return {"own_number": "needed"}
    covers = (("visits",) if ticked.visits else ()) + (("upkeep", "offers") if ticked.upkeep else ())
    with store.write() as connection:
        shop = shops.load_shop(connection, shop_id)
        words = _words(shop, language)
        said = [words.visits] * ticked.visits + [words.upkeep] * ticked.upkeep
        said += [words.own_number] * ticked.is_own_and_adult
        text = "\n".join([words.title, *said, words.notes])
        entry = ConsentEntry(
            _phone(connection, shop_id, phone_id)["number"], "given", covers, now, day_of(now, shop.zone), "tablet",
            text, words.version, language, ticked.is_own_and_adult, f"taken by {who}",
        )  # fmt: skip
        return _keep(connection, shop, phone_id, person_id, entry, secret, who)


def take_spoken(
    store: Store, shop_id: int, phone_id: int, person_id: int, secret: str, who: str, now: datetime
) -> Outcome:
    """Keep that the customer said yes to texts about visits; spoken consent covers nothing else."""
    with store.write() as connection:
        shop = shops.load_shop(connection, shop_id)
        row = _phone(connection, shop_id, phone_id)
        language = row["language"] or "en"
        words = _words(shop, language)
        entry = ConsentEntry(
            row["number"], "given", ("visits",), now, day_of(now, shop.zone), "spoken", words.visits, words.version,
            language, because=f"taken by {who}",
        )  # fmt: skip
        return _keep(connection, shop, phone_id, person_id, entry, secret, who)


def _keep(
    connection: Connection, shop: Shop, phone_id: int, person_id: int, entry: ConsentEntry, secret: str, who: str
) -> Outcome:
    made = consents.append(connection, shop.id, entry, secret, who)
    standing = consents.standing_of(connection, shop.id, entry.number)
    if standing.is_stopped:
        return "stopped"
    if made is None:
        return "known"
    if entry.how == "tablet":
        people.change_phone(connection, phone_id, language=entry.language)
    outbox.plan_text(
        connection, shop.id, "opted_in", f"consent:{made}", entry.at, phone_id=phone_id, number=entry.number,
        person_id=person_id, language=entry.language, facts={"is_upkeep": "upkeep" in standing.covers},
        valid_until=entry.at + CONFIRMED_WITHIN,
    )  # fmt: skip
    return "kept"


def _phone(connection: Connection, shop_id: int, phone_id: int) -> Row:
    row = people.load_phone(connection, shop_id, phone_id)
    if row is None:
        raise LookupError(f"There is no phone {phone_id}.")
    return row


def _words(shop: Shop, language: str) -> ConsentWords:
    if language not in LANGUAGES:
        raise LookupError(f"There is no form in {language!r}.")
    return consent_words(language, shop.name, phrase_phone(shop.phone))
