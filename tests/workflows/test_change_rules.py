"""Rules of the shop: each is on a page and has words, what is out of range is refused, versions and the way back.

Limits of hours: 47 CFR 64.1200(c)(1), no calls before 8 a.m. or after 9 p.m. at the called party's location. The rest
are this project's own rules for the trade.
"""

from __future__ import annotations

from dataclasses import asdict, replace
from datetime import UTC, datetime
from typing import Any

import pytest
from werkzeug.datastructures import MultiDict

from followup.core.shop import RULES, ShopRules
from followup.storage import shops
from followup.storage.store import Store, make_engine
from followup.web.manager import rules_form
from followup.workflows.change_rules import RulesAnswer, bring_back, change_rules, check_rules
from followup.workflows.look_at_timing import look_at_timing
from tests.shop_of_tests import add_shop

NOW = datetime(2026, 11, 24, 15, 0, tzinfo=UTC)
PAGES = ("timing", "wording", "duty")
ALL = ("timing", "wording", "duty", "owner")


@pytest.fixture
def store(database_url: str) -> Store:
    """A shop without rules of its own yet."""
    store = Store(make_engine(database_url))
    add_shop(store)
    return store


def change(store: Store, based_on: int = 0, pages: tuple[str, ...] = ALL, **news: Any) -> RulesAnswer:
    return change_rules(store, 1, pages, news, based_on, "Theo Marsh", "a trial", NOW)


def rules_of(store: Store) -> ShopRules:
    with store.read() as connection:
        return shops.load_shop(connection, 1).rules


@pytest.mark.parametrize("rule", RULES, ids=lambda rule: rule.name)
def test_every_rule_is_on_a_page_and_has_its_words(rule: Any) -> None:
    assert rule.metadata["page"] in ALL
    assert len(rule.metadata["words"]) > 10
    shown = [one.name for _, fields in rules_form.groups_of(rule.metadata["page"]) for one in fields]
    assert shown.count(rule.name) == 1
    assert rules_form.rule_field(rule.name).entries


def test_every_rule_survives_the_form_the_store_and_the_way_back(store: Store) -> None:
    names = [rule.name for rule in RULES]
    own = replace(
        ShopRules(), closed_on=["2026-12-24"], action_limits={"brake_pad": 3.5}, legal_limits={"tire_tread": 2.0},
        price_text="An oil service is $60.", lead_days=28, asks_after_visit=False,
    )  # fmt: skip
    typed = {name: ("yes" if value is True else value) for name, value in rules_form.shown(own, names).items()}
    sent = MultiDict({name: str(value) for name, value in typed.items() if value is not False})
    news, wrong, rest = rules_form.read(names, MultiDict([*sent.items(), ("because", "x"), ("based_on", "0")]))
    assert (wrong, rest) == ({}, {"because": "x", "based_on": 0})
    assert ShopRules(**news) == own
    assert change(store, **news).version == 1
    assert plain(asdict(rules_of(store))) == plain(asdict(own))


def plain(value: Any) -> Any:
    """JSON knows no pairs."""
    if isinstance(value, dict):
        return {key: plain(one) for key, one in value.items()}
    return [plain(one) for one in value] if isinstance(value, list | tuple) else value


@pytest.mark.parametrize("rule", [one for one in RULES if one.metadata["least"] is not None], ids=lambda one: one.name)
def test_numbers_outside_their_limits_are_refused_in_words(rule: Any, store: Store) -> None:
    least, most = rule.metadata["least"], rule.metadata["most"]
    for value in (least - 0.01 if isinstance(least, float) else least - 1, most + 1):
        done = change(store, **{rule.name: value})
        assert done.version is None
        assert done.wrong[rule.name].startswith("Give ")
    with store.read() as connection:
        assert shops.load_shop(connection, 1).rules_version == 0


@pytest.mark.parametrize(
    ("rule", "value"),
    [
        ("invite_hours", {"mon": ("07:59", "18:00")}),
        ("visit_text_hours", {"mon": ("08:00", "21:01")}),
        ("invite_hours", {"sun": ("10:00", "17:00")}),
        ("open_hours", {"mon": ("18:00", "07:30")}),
        ("open_hours", {}),
        ("closed_on", ["2026-02-30"]),
        ("winter_from", "02-29"),
        ("winter_until", "9-17"),
        ("winter_from", "09-17"),
        ("labor_hours", {"welding": 4.0}),
        ("labor_hours", {"general": -1.0}),
        ("action_limits", {"brake_pad": 30.0}),
        ("action_limits", {"wiper_blade": 1.0}),
        ("free_services", {"brake_fluid": ""}),
        ("price_text", "A brake check is $40 and keeps you safe."),
        ("price_text", "La prueba cuesta $40 y es seguro."),
    ],
)
def test_what_no_shop_may_set_is_refused_in_words(rule: str, value: Any, store: Store) -> None:
    done = change(store, **{rule: value})
    assert done.version is None
    assert set(done.wrong) == {rule}


def test_the_rules_as_shipped_have_no_fault(store: Store) -> None:
    with store.read() as connection:
        assert check_rules(ShopRules(), shops.load_shop(connection, 1)) == {}


def test_versions_tell_who_changed_what_and_lead_back(store: Store) -> None:
    assert change(store, lead_days=30).version == 1
    assert change(store, 1, lead_days=14, tries=1).version == 2
    assert bring_back(store, 1, 1, 2, "Ines Calloway", NOW, PAGES).version == 3
    assert (rules_of(store).lead_days, rules_of(store).tries) == (30, 2)
    newest, second, _ = look_at_timing(store, 1).versions
    assert (newest.author, newest.because) == ("Ines Calloway", "back to version 1")
    assert {(one.rule, one.before, one.after) for one in second.changes} == {("lead_days", 30, 14), ("tries", 2, 1)}


def test_the_way_back_ends_at_the_rules_as_shipped(store: Store) -> None:
    change(store, lead_days=30, closed_on=["2026-12-24"])
    assert bring_back(store, 1, 0, 1, "Ines Calloway", NOW, PAGES).version == 2
    assert plain(asdict(rules_of(store))) == plain(asdict(ShopRules()))
    with pytest.raises(LookupError):
        bring_back(store, 1, 9, 2, "Ines Calloway", NOW, PAGES)


def test_the_way_back_leaves_the_owners_switch_alone(store: Store) -> None:
    change(store, lead_days=30)
    change(store, 1, is_sending_stopped=True)
    assert bring_back(store, 1, 1, 2, "Theo Marsh", NOW, PAGES).wrong  # nothing of a manager's changed since
    change(store, 2, lead_days=10)
    assert bring_back(store, 1, 1, 3, "Theo Marsh", NOW, PAGES).version == 4
    assert rules_of(store).is_sending_stopped


def test_two_at_the_same_time_do_not_undo_each_other(store: Store) -> None:
    assert change(store, 0, lead_days=30).version == 1
    assert "meantime" in change(store, 0, lead_days=14).wrong[""]
    assert rules_of(store).lead_days == 30


def test_a_managers_page_cannot_reach_the_owners_switch(store: Store) -> None:
    with pytest.raises(ValueError, match="is_sending_stopped"):
        change(store, pages=PAGES, is_sending_stopped=True)
