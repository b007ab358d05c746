"""Other rules tried on the demo shop: what is told of its own cars is what planning would do, and nothing is kept."""

from __future__ import annotations

from collections.abc import Generator
from datetime import timedelta

from sqlalchemy import func, select

from followup.core.wall import day_of
from followup.storage import tables
from followup.workflows.try_rules import NO_FORECAST, Tried, try_rules
from tests.workflows.demo import Demo


def drained(steps: Generator[float, None, Tried]) -> tuple[list[float], Tried]:
    shares = []
    while True:
        try:
            shares.append(next(steps))
        except StopIteration as ended:
            return shares, ended.value


def tried(demo: Demo, **news: object) -> tuple[list[float], Tried]:
    return drained(try_rules(demo.house.store, demo.shop_id, news, demo.house.now(), worlds=40))


def test_what_is_planned_this_morning_is_what_it_says_of_today(demo: Demo) -> None:
    # The demo's first morning has planned already: its invites count as sent, so nothing more leaves today.
    shares, found = tried(demo)
    assert shares == sorted(shares) and shares[0] == 0.0 and shares[-1] == 1.0
    assert found.cars > 50 and found.changes == ()
    assert found.today == found.tried
    assert found.today.texts.mean > 0 and found.today.texts.low <= found.today.texts.mean <= found.today.texts.high


def test_an_earlier_lead_time_tells_more_and_names_the_cars(demo: Demo) -> None:
    _, found = tried(demo, lead_days=60)
    assert found.tried.texts.mean > found.today.texts.mean
    earlier = [one for one in found.changes if one.after and (one.before is None or one.after < one.before)]
    assert earlier and all(one.label for one in earlier)
    today = day_of(demo.house.now(), demo.zone)
    assert all(today <= one.after <= today + timedelta(days=182) for one in earlier if one.after)


def test_more_hours_are_planned_where_more_are_tried(demo: Demo) -> None:
    hours = dict(demo.house.shop(demo.shop_id).rules.labor_hours)
    _, found = tried(demo, labor_hours={**hours, "tires": hours["tires"] * 2})
    assert sum(found.planned_tried["tires"]) == 2 * sum(found.planned_today["tires"])
    assert found.planned_tried["brakes"] == found.planned_today["brakes"]


def test_it_says_that_changed_limits_are_not_in_it_and_keeps_nothing(demo: Demo) -> None:
    with demo.house.store.read() as connection:
        before = connection.execute(select(func.count()).select_from(tables.shop_versions)).scalar_one()
        texts = connection.execute(select(func.count()).select_from(tables.texts)).scalar_one()
    _, found = tried(demo, action_limits={"tire_tread": 5.0})
    assert NO_FORECAST in found.notes
    with demo.house.store.read() as connection:
        assert connection.execute(select(func.count()).select_from(tables.shop_versions)).scalar_one() == before
        assert connection.execute(select(func.count()).select_from(tables.texts)).scalar_one() == texts
