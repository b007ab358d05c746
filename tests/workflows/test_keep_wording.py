"""The shop's own wording: refused in words where a check holds it back, used only after a second person's look.

The planted faults are of this project's own rule of what no text says and what every text says.
"""

from __future__ import annotations

from datetime import UTC, datetime

import pytest

from followup.core.text import REASONS
from followup.storage import staff, wordings
from followup.storage.store import Store, make_engine
from followup.wording import LANGUAGES, shipped
from followup.workflows.keep_wording import NOT_THE_AUTHOR, Kept, approve_wording, end_wording, keep_wording
from followup.workflows.look_at_wording import look_at_wording, look_at_wordings, preview
from followup.workflows.send_texts.body import facts_of
from tests.shop_of_tests import add_shop
from tests.workflows.demo import Demo

NOW = datetime(2026, 11, 24, 15, 0, tzinfo=UTC)
OWN = """{{ shop }}: Hi{% if who %} {{ who }}{% endif %}, a note on your {{ car }}.

{% for item in items %}
{{ item.line }}.
{% endfor %}

What day suits you? Text back or call {{ shop_phone }}. Reply STOP to stop texts."""
THEO, INES = 1, 2


@pytest.fixture
def store(database_url: str) -> Store:
    """A shop with a manager and an owner."""
    store = Store(make_engine(database_url))
    shop_id = add_shop(store)
    with store.write() as connection:
        staff.add(connection, shop_id, "theo", "Theo Marsh", "manager", "no password", NOW)
        staff.add(connection, shop_id, "ines", "Ines Calloway", "owner", "no password", NOW)
    return store


def keep(store: Store, source: str = OWN) -> Kept:
    return keep_wording(store, 1, "due_work", "en", source, THEO, "Theo Marsh", NOW)


def source_in_use(store: Store) -> str | None:
    with store.read() as connection:
        found = wordings.in_use(connection, 1, "due_work", "en")
    return found["source"] if found else None


def test_it_is_used_only_after_somebody_else_looked(store: Store) -> None:
    assert keep(store).version == 1
    assert source_in_use(store) is None
    assert approve_wording(store, 1, 1, THEO, "Theo Marsh", NOW) == NOT_THE_AUTHOR
    assert source_in_use(store) is None
    assert approve_wording(store, 1, 1, INES, "Ines Calloway", NOW) is None
    assert source_in_use(store) == OWN
    assert approve_wording(store, 1, 1, INES, "Ines Calloway", NOW) == NOT_THE_AUTHOR


def test_ended_versions_give_way_to_the_one_before_and_then_to_the_shipped_text(store: Store) -> None:
    second = OWN.replace("What day", "Which day")
    keep(store)
    assert keep(store, second).version == 2
    for wording in (1, 2):
        approve_wording(store, 1, wording, INES, "Ines Calloway", NOW)
    assert source_in_use(store) == second
    assert end_wording(store, 1, 2, "Theo Marsh", NOW)
    assert source_in_use(store) == OWN
    assert end_wording(store, 1, 1, "Theo Marsh", NOW)
    assert source_in_use(store) is None
    assert not end_wording(store, 1, 1, "Theo Marsh", NOW)
    assert "ended" in (approve_wording(store, 1, 1, INES, "Ines Calloway", NOW) or "")


@pytest.mark.parametrize(
    ("planted", "says"),
    [
        (OWN.replace("a note on", "it is not safe to drive"), "never that a car is safe"),
        (OWN.replace("What day", "You must come: what day"), "do not order"),
        (OWN.replace("{{ shop }}: ", ""), "begin with the shop's name"),
        (OWN.replace(" Reply STOP to stop texts.", ""), "how to stop"),
        (OWN.replace(" or call {{ shop_phone }}", ""), "phone number"),
        (OWN.replace("{{ car }}", "{{ plate }}"), "plate"),
        (OWN.replace("{{ car }}", "{{ car.__class__ }}"), "__class__"),
        (OWN.replace("What day", "Look at http://example.com. What day"), "own domain"),
        ("", "Write what the text should say."),
    ],
)
def test_a_planted_fault_is_refused_in_words(store: Store, planted: str, says: str) -> None:
    kept = keep(store, planted)
    assert kept.version is None
    assert any(says.lower() in fault.says.lower() for fault in kept.faults), [one.says for one in kept.faults]
    with store.read() as connection:
        assert wordings.of_shop(connection, 1) == []


def test_all_faults_are_told_at_once(store: Store) -> None:
    planted = OWN.replace("a note on", "an urgent note, safe or not, on").replace(" Reply STOP to stop texts.", "")
    assert {fault.rule for fault in keep(store, planted).faults} >= {"urgent", "safe", "how to stop"}


def test_another_shops_wording_cannot_be_approved(store: Store) -> None:
    keep(store)
    with pytest.raises(LookupError):
        approve_wording(store, 2, 1, INES, "Somebody", NOW)


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_text_can_be_looked_at_and_reads_well_as_shipped(store: Store, language: str) -> None:
    codes = [one.reason.code for one in look_at_wordings(store, 1)]
    assert set(codes) == {one.code for one in REASONS} - {"from_a_person"}
    for code in codes:
        seen = look_at_wording(store, 1, code, language)
        assert seen is not None
        shown = preview(store, 1, code, language, seen.shipped, NOW, facts_of)
        assert shown.text, (code, shown.faults)
        assert not [one for one in shown.faults if one.is_stopping], (code, shown.faults)


def test_the_preview_on_a_real_car_is_what_leaves(demo: Demo) -> None:
    invite = demo.a_planned_invite()
    seen = look_at_wording(demo.house.store, demo.shop_id, invite["reason"], "en")
    assert seen is not None
    assert seen.examples
    sent_at = demo.at("2026-11-24T10:30")
    demo.run()
    sent = next(row for row in demo.texts_to(invite["number"]) if row["id"] == invite["id"])
    assert sent["state"] == "sent"
    source = shipped(sent["language"], invite["reason"])
    store, language = demo.house.store, sent["language"]
    shown = preview(store, demo.shop_id, invite["reason"], language, source, sent_at, facts_of, invite["id"])
    assert shown.text == sent["body"]
    assert shown.count == sent["segments"]
