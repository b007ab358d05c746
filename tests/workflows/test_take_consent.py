"""Consent at the counter: exact words in the ledger, one text, a stop that stands, spoken for visits alone.

Sources: 47 CFR 64.1200(f)(9) (written agreement, its words, not a condition of a purchase); CTIA's messaging principles
(one confirmation after opting in); both from memory.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

import pytest

from followup.core.consent import ConsentEntry
from followup.storage import consents, outbox, people
from followup.storage.store import Store, make_engine
from followup.wording import consent_words
from followup.workflows.take_consent import Ticked, add_number, look_at_person, take_on_tablet, take_spoken
from tests.shop_of_tests import BEGIN, add_shop

SECRET = "only-for-tests-0123456789abcdef"
NUMBER = "+13125550147"
ALL_TICKED = Ticked(visits=True, upkeep=True, is_own_and_adult=True)


@pytest.fixture
def counter(database_url: str) -> tuple[Store, int, int, int]:
    """A shop with one customer whose number is known: store, shop, person, phone."""
    store = Store(make_engine(database_url))
    shop_id = add_shop(store)
    with store.write() as connection:
        person = people.keep_person(connection, shop_id, "C-1", "Ada Moreno", "es", BEGIN.date(), BEGIN)
    assert add_number(store, shop_id, person, "312 555 0147", BEGIN, SECRET) is None
    seen = look_at_person(store, shop_id, person)
    assert seen is not None
    assert [(phone.number, phone.language) for phone in seen.phones] == [(NUMBER, "es")]
    return store, shop_id, person, seen.phones[0].phone_id


Counter = tuple[Store, int, int, int]


def ledger(counter: Counter) -> list[ConsentEntry]:
    """The number's lines."""
    with counter[0].read() as connection:
        return consents.ledger(connection, counter[1], NUMBER)


def confirmations(counter: Counter) -> list[tuple[str, dict[str, object]]]:
    """Language and facts of the texts that confirm."""
    with counter[0].read() as connection:
        texts = outbox.texts_of_phone(connection, counter[3])
    return [(text["language"], text["facts"]) for text in texts if text["reason"] == "opted_in"]


def tick(counter: Counter, ticked: Ticked, language: str = "en", minutes: int = 0) -> object:
    """The customer confirms on the tablet."""
    store, shop_id, person, phone = counter
    return take_on_tablet(
        store, shop_id, phone, person, language, ticked, SECRET, "Noor", BEGIN + timedelta(minutes=minutes)
    )


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_exact_words_go_into_the_ledger_and_one_text_confirms(counter: Counter, language: str) -> None:
    assert tick(counter, ALL_TICKED, language) == "kept"
    assert tick(counter, ALL_TICKED, language, minutes=1) == "known"
    (entry,) = ledger(counter)
    words = consent_words(language, "Elm Street Auto", "(312) 555-0101")
    assert words.visits in entry.words
    assert words.upkeep in entry.words
    assert words.own_number in entry.words
    assert words.notes in entry.words
    assert (entry.words_version, entry.how, entry.language) == (words.version, "tablet", language)
    assert (entry.covers, entry.is_own_and_adult) == (("visits", "upkeep", "offers"), True)
    assert confirmations(counter) == [(language, {"is_upkeep": True})]


def test_words_that_were_not_ticked_are_not_in_the_ledger(counter: Counter) -> None:
    assert tick(counter, Ticked(visits=True, upkeep=False, is_own_and_adult=False)) == "kept"
    (entry,) = ledger(counter)
    assert entry.covers == ("visits",)
    assert consent_words("en", "Elm Street Auto", "(312) 555-0101").upkeep not in entry.words
    assert confirmations(counter) == [("en", {"is_upkeep": False})]


def test_upkeep_needs_the_own_number_of_an_adult_and_nothing_needs_a_tick(counter: Counter) -> None:
    assert tick(counter, replace(ALL_TICKED, is_own_and_adult=False)) == {"own_number": "needed"}
    assert tick(counter, Ticked(False, False, True)) == {"visits": "nothing"}
    assert ledger(counter) == []
    assert confirmations(counter) == []


def test_spoken_consent_covers_visits_alone(counter: Counter) -> None:
    store, shop_id, person, phone = counter
    assert take_spoken(store, shop_id, phone, person, SECRET, "Noor", BEGIN) == "kept"
    with store.read() as connection:
        assert consents.standing_of(connection, shop_id, NUMBER).covers == {"visits"}
    assert confirmations(counter) == [("en", {"is_upkeep": False})]


def test_after_a_stop_spoken_words_lift_nothing_and_no_text_leaves(counter: Counter) -> None:
    store, shop_id, person, phone = counter
    stop = ConsentEntry(NUMBER, "taken_back", (), BEGIN, BEGIN.date(), "text_in")
    with store.write() as connection:
        consents.append(connection, shop_id, stop, SECRET, "inbound 1")
    assert take_spoken(store, shop_id, phone, person, SECRET, "Noor", BEGIN + timedelta(minutes=1)) == "stopped"
    assert confirmations(counter) == []
    assert tick(counter, ALL_TICKED, minutes=2) == "kept", "the customer's own confirmation, kept as it happened"


def test_a_number_that_cannot_exist_is_refused(counter: Counter) -> None:
    store, shop_id, person, _ = counter
    assert add_number(store, shop_id, person, "555", BEGIN, SECRET)
    assert add_number(store, shop_id, 999, "312 555 0148", BEGIN, SECRET)
