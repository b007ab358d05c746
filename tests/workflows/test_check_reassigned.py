"""The check of reassigned numbers by file: what is asked, what each answer does, and a person's word that ends it.

Source: the FCC's Reassigned Numbers Database (number and consent date in; yes, no or no data out), quoted in the facts
of this project; "no" is a safe harbor.
"""

from __future__ import annotations

from datetime import date, timedelta
from typing import Any

import pytest

from followup.core.consent import ConsentEntry
from followup.storage import consents, outbox, people
from followup.storage.rows import Row
from followup.workflows.check_reassigned import as_csv, keep_answers, numbers_to_check
from followup.workflows.look_at_may_text import look_at_may_text
from followup.workflows.look_at_phone_list import look_at_phone_list
from followup.workflows.settle_number import say_what_line, settle_held
from tests.workflows.counter import NOW, NUMBER, SECRET, Counter, open_counter

TEN = NUMBER[2:]
HEAD = "number,consent_on,answer\n"


@pytest.fixture
def counter(memory_url: str) -> Counter:
    """A shop whose one customer agreed on January 12."""
    return open_counter(memory_url)


def bring(counter: Counter, lines: str) -> tuple[dict[str, int], list[tuple[int, str]]]:
    """Bring answers in: how many of each, and the faults."""
    kept = keep_answers(counter.store, counter.shop_id, lines, "Theo", NOW)
    return {"yes": kept.yes, "no": kept.no, "no_data": kept.no_data}, list(kept.faults)


def phone(counter: Counter) -> Row:
    with counter.store.read() as connection:
        found = people.load_phone(connection, counter.shop_id, counter.phone_id)
    assert found is not None
    return found


def rules(counter: Counter) -> set[str]:
    """What is against an invite."""
    seen = look_at_may_text(counter.store, counter.shop_id, NUMBER, NOW + timedelta(hours=2), secret=SECRET)
    return set() if seen.answers["upkeep"].may else {one.rule for one in seen.answers["upkeep"].because}


def consent(counter: Counter, event: Any, on: date) -> None:
    entry = ConsentEntry(NUMBER, event, ("visits",), NOW, on, "tablet", f"words of {on}")
    with counter.store.write() as connection:
        consents.append(connection, counter.shop_id, entry, SECRET, "test")


def test_asked_is_about_each_number_with_the_day_of_its_newest_consent(counter: Counter) -> None:
    assert numbers_to_check(counter.store, counter.shop_id) == [(NUMBER, date(2026, 1, 12))]
    consent(counter, "given", date(2026, 6, 1))
    found = numbers_to_check(counter.store, counter.shop_id)
    assert as_csv(found) == f"number,consent_on\r\n{TEN},2026-06-01\r\n"
    consent(counter, "taken_back", date(2026, 6, 2))
    assert numbers_to_check(counter.store, counter.shop_id) == [], "nothing leaves to it anyway"


def test_no_and_no_data_are_kept_and_hold_nothing(counter: Counter) -> None:
    assert bring(counter, f"{HEAD}{TEN},2026-01-12,No\n") == ({"yes": 0, "no": 1, "no_data": 0}, [])
    assert (phone(counter)["reassigned"], phone(counter)["reassigned_asked_on"]) == ("no", date(2026, 1, 12))
    assert bring(counter, f"{HEAD}{NUMBER},2026-01-12,no data\n")[0]["no_data"] == 1
    assert rules(counter) == set()


def test_yes_holds_the_number_until_a_person_looked(counter: Counter) -> None:
    counter.plan()
    assert bring(counter, f"{HEAD}{TEN},2026-01-12,YES\r\n")[0]["yes"] == 1
    assert bring(counter, f"{HEAD}{TEN},2026-01-12,yes\r\n")[0]["yes"] == 1, "again it changes nothing"
    assert rules(counter) == {"reassigned"}
    assert [row["state"] for row in counter.texts()] == ["dropped"]
    (call,) = look_at_phone_list(counter.store, counter.shop_id)
    assert call.kind == "tie" and "somebody else" in call.says
    assert settle_held(counter.store, counter.shop_id, counter.phone_id, True, counter.staff_id, "A", NOW, SECRET)
    assert rules(counter) == set() and look_at_phone_list(counter.store, counter.shop_id) == ()
    assert not settle_held(counter.store, counter.shop_id, counter.phone_id, True, counter.staff_id, "B", NOW, SECRET)


def test_not_theirs_ends_the_tie_and_the_consent(counter: Counter) -> None:
    counter.ask(state="confirmed", slot_at=NOW + timedelta(days=3))
    bring(counter, f"{HEAD}{TEN},2026-01-12,yes")
    assert settle_held(counter.store, counter.shop_id, counter.phone_id, False, counter.staff_id, "A", NOW, SECRET)
    assert rules(counter) == {"stop", "nobody"}
    with counter.store.read() as connection:
        assert people.persons_of_phone(connection, counter.phone_id) == []
        assert consents.ledger(connection, counter.shop_id, NUMBER)[-1].how == "reassigned"
    assert any("booking stands" in row["says"] for row in counter.alerts() if row["kind"] == "phone_task")


def test_an_answer_about_an_older_consent_is_told_and_changes_nothing(counter: Counter) -> None:
    consent(counter, "given", date(2026, 6, 1))
    kept, faults = bring(counter, f"{HEAD}{TEN},2026-01-12,yes\n")
    assert kept["yes"] == 0 and "newer consent was given on 2026-06-01" in faults[0][1]
    assert rules(counter) == set()


def test_all_faults_are_told_at_once_and_good_lines_are_kept(counter: Counter) -> None:
    kept, faults = bring(
        counter,
        f"{HEAD}12,2026-01-12,no\n{TEN},soon,no\n{TEN},2026-01-12,perhaps\n2175550147,2026-01-12,no\n{TEN}\n\n"
        f"{TEN},2026-01-12,no\n",
    )
    assert kept["no"] == 1
    assert [line for line, _ in faults] == [2, 3, 4, 5, 6]
    assert bring(counter, "number;answer\n")[1][0][0] == 1
    assert bring(counter, "")[1] == [(1, "the first line must name the columns; missing: number, consent_on, answer")]


def test_a_landline_is_called_instead(counter: Counter) -> None:
    """Planning lists it for a call; a person's word about the line decides, also back."""
    assert say_what_line(counter.store, counter.shop_id, counter.phone_id, "landline", "Avery", NOW)
    assert rules(counter) == {"landline"}
    with counter.store.write() as connection:
        people.change_phone(connection, counter.phone_id, bad_because="a provider said so")
    assert say_what_line(counter.store, counter.shop_id, counter.phone_id, "mobile", "Avery", NOW)
    assert rules(counter) == set() and phone(counter)["bad_because"] is None
    assert not say_what_line(counter.store, counter.shop_id, 999, "mobile", "Avery", NOW)
    with counter.store.read() as connection:
        assert outbox.planned_for(connection, counter.phone_id) == []
