"""Planning looks at whom something changed of, and whose day has come: the same texts and calls as by a look at all.

Held against the rules themselves: a second database alike, in which every round looks at all of whom there may be a
reason, is lived through the same days (`lived_days.py`, which compares more cars and days from the command line).
"""

from __future__ import annotations

from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import select

from followup.storage import looks, marks, pictures, rows, shops, tables
from followup.storage.store import Store, make_engine
from followup.workflows.forecast_windows import count_cars_with_news, take_news
from followup.workflows.plan_texts import plan_texts
from tests.workflows.counter import NOW, Counter, open_counter
from tests.workflows.lived_days import compare

A_DAY = timedelta(days=1)


def test_the_same_texts_and_calls_as_by_a_look_at_all(tmp_path: Path) -> None:
    told = compare(tmp_path, cars=24, days=120, every=12, events=3, seed=7002)
    assert told.differences == []
    assert told.texts > 10
    # After the first round, which looks at everybody.
    assert sum(told.looked_at[1:]) < sum(told.looked_at_by_all[1:])


@pytest.fixture
def counter(database_url: str) -> Counter:
    """The shop with its one car, forecast and planned for."""
    counter = open_counter(database_url)
    take_news(counter.store, counter.shop_id)
    plan_texts(counter.store, counter.shop_id, NOW)
    plan_texts(counter.store, counter.shop_id, NOW)
    return counter


def _wanted(counter: Counter, store: Store | None = None) -> looks.ToLookAt:
    with (store or counter.store).read() as connection:
        shop = shops.load_shop(connection, counter.shop_id)
        word = looks.word_of(connection, shop, needs_registration=False)
        return looks.to_look_at(connection, shop, NOW, word)


def _rest(store: Store, counter: Counter) -> None:
    with store.write() as connection:
        rows.add(
            connection, tables.rests, shop_id=counter.shop_id, vehicle_id=counter.vehicle_id, item="battery",
            because="no", from_on=NOW.date(),
        )  # fmt: skip


def test_who_was_looked_at_is_left_alone_until_something_changes(counter: Counter) -> None:
    assert _wanted(counter) == looks.ToLookAt([], [])
    _rest(counter.store, counter)
    assert len(_wanted(counter).numbers) == 1
    plan_texts(counter.store, counter.shop_id, NOW)
    assert _wanted(counter) == looks.ToLookAt([], [])


def test_a_change_of_the_rules_is_looked_at_by_all(counter: Counter) -> None:
    with counter.store.write() as connection:
        rules = shops.load_shop(connection, counter.shop_id).rules
        shops.save_rules(connection, counter.shop_id, rules, "Theo Marsh", NOW, "a trial")
    assert len(_wanted(counter).numbers) == 1


def test_what_changes_while_it_is_looked_at_is_looked_at_again(
    counter: Counter, database_url: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The change is committed after the picture was read and before the look is kept."""
    other, read = Store(make_engine(database_url)), pictures.gather_near

    def read_and_change(*given: Any) -> Any:
        found = read(*given)
        monkeypatch.setattr(pictures, "gather_near", read)
        _rest(other, counter)
        return found

    _rest(counter.store, counter)
    monkeypatch.setattr(pictures, "gather_near", read_and_change)
    plan_texts(counter.store, counter.shop_id, NOW)
    assert len(_wanted(counter).numbers) == 1
    plan_texts(counter.store, counter.shop_id, NOW)
    assert _wanted(counter).numbers == []
    other.close()


def test_of_two_who_look_the_one_that_read_later_stands(counter: Counter) -> None:
    with counter.store.read() as connection:
        number = list(connection.execute(select(tables.phones.c.number)).scalars())
        seen = looks.versions(connection, counter.shop_id, number)
    (phone_id,) = seen
    for at in (NOW + A_DAY, NOW - A_DAY):
        with counter.store.write() as connection:
            looks.keep(connection, "a word", {phone_id: at}, seen)
    with counter.store.read() as connection:
        assert connection.execute(select(tables.plan_looks.c.look_at)).scalars().all() == [NOW + A_DAY]


def test_a_mark_without_news_is_taken_out(counter: Counter) -> None:
    with counter.store.write() as connection:
        rows.add(connection, tables.forecast_marks, shop_id=counter.shop_id, vehicle_id=counter.vehicle_id)
    assert count_cars_with_news(counter.store, counter.shop_id) == 0
    assert take_news(counter.store, counter.shop_id) == []
    with counter.store.read() as connection:
        assert marks.forecast_marks(connection, counter.shop_id) == []
