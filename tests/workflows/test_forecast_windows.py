"""Windows are made where there is news, on a real database: of a car, or of a rule that they are computed with."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta
from typing import Any

import pytest

from followup.storage import shops, windows
from followup.storage.due import due_items
from followup.storage.rows import Row
from followup.workflows.forecast_windows import count_cars_with_news, forecast_windows
from tests.workflows.counter import NOW, Counter, open_counter

LATER = NOW + timedelta(hours=1)


@pytest.fixture
def counter(database_url: str) -> Counter:
    """The shop with its one car, forecast already."""
    counter = open_counter(database_url)
    forecast_windows(counter.store, counter.shop_id, NOW)
    return counter


def change(counter: Counter, at: datetime, **rules: Any) -> None:
    """A new version of the rules."""
    changed = replace(counter.shop().rules, **rules)
    with counter.store.write() as connection:
        shops.save_rules(connection, counter.shop_id, changed, "Theo Marsh", at, "a trial")


def pad(counter: Counter) -> Row:
    """The window of the left front pad."""
    with counter.store.read() as connection:
        found = windows.windows_of(connection, counter.vehicle_id)
    return next(one for one in found if (one["item"], one["position"]) == ("brake_pad", "front_left"))


def test_without_news_nothing_is_forecast_again(counter: Counter) -> None:
    assert count_cars_with_news(counter.store, counter.shop_id) == 0
    assert forecast_windows(counter.store, counter.shop_id, LATER) == 0


def test_a_changed_limit_makes_every_window_anew(counter: Counter) -> None:
    before = pad(counter)["body"]
    change(counter, LATER, action_limits={"brake_pad": 2.0})
    assert forecast_windows(counter.store, counter.shop_id, LATER + timedelta(minutes=1)) == 1
    after = pad(counter)["body"]
    assert (before["limit"]["value"], after["limit"]["value"]) == (3.0, 2.0)
    # A millimeter more at the usual .165 a thousand miles lasts months.
    assert after["curve"]["days"][20] > before["curve"]["days"][20] + 60
    assert (after["now"], after["because"]) == (before["now"], before["because"])
    assert count_cars_with_news(counter.store, counter.shop_id) == 0


def test_a_rule_that_the_forecast_does_not_use_changes_no_window(counter: Counter) -> None:
    change(counter, LATER, lead_days=30)
    assert count_cars_with_news(counter.store, counter.shop_id) == 0


def test_a_rule_that_was_brought_back_counts_as_a_change(counter: Counter) -> None:
    change(counter, LATER, gauges_round_down=True)
    forecast_windows(counter.store, counter.shop_id, LATER + timedelta(minutes=1))
    change(counter, LATER + timedelta(hours=1), gauges_round_down=False)
    assert count_cars_with_news(counter.store, counter.shop_id) == 1


def test_gauges_that_are_read_down_make_windows_later(counter: Counter) -> None:
    before = pad(counter)["body"]
    change(counter, LATER, gauges_round_down=True)
    forecast_windows(counter.store, counter.shop_id, LATER + timedelta(minutes=1))
    assert pad(counter)["body"]["curve"]["days"][20] > before["curve"]["days"][20]


def test_only_what_wears_keeps_its_chance_of_being_near_and_old_windows_go_by_the_plain_rule(counter: Counter) -> None:
    shop = counter.shop()
    row = pad(counter)
    assert row["body"]["near"]["days"][20] < row["body"]["curve"]["days"][20]
    (mine,) = due_items([row], shop, LATER.date())
    assert mine.chance_near is not None and mine.chance_near >= mine.chance_by_lead
    old = {**row, "body": {name: value for name, value in row["body"].items() if name != "near"}}
    (before,) = due_items([old], shop, LATER.date())
    assert before == replace(mine, chance_near=None)
