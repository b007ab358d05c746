"""Scores in the database: each forecast once, again when what is known changes, none lost.

What a score must be is held against scipy and simulation in tests/core/forecast; here who is scored, by which reading.
"""

from __future__ import annotations

import json
import math
from datetime import UTC, date, datetime, timedelta
from typing import Any

import pytest
from sqlalchemy import func, select

from followup.core.forecast.priors import ShopPriors, WearLesson
from followup.storage import learned_priors, outbox, people, scores, tables, windows
from followup.storage.rows import Row
from followup.storage.store import Store, make_engine
from followup.workflows.change_rules import change_rules
from followup.workflows.forecast_windows import forecast_windows
from followup.workflows.keep_inspections import keep_inspections
from followup.workflows.look_at_scores import look_at_scores
from followup.workflows.score_forecasts import count_cars_to_score, score_forecasts
from tests.shop_of_tests import add_shop
from tests.workflows.demo import Demo

PLACES = ("front_left", "front_right")


class Shop:
    """A shop with one car; days come as ISO texts."""

    def __init__(self, url: str) -> None:
        self.store = Store(make_engine(url))
        self.shop_id = add_shop(self.store)

    def inspect(
        self, on: str, miles: int, *pads: float, received_on: str | None = None, car: str = "V-1", **more: Any
    ) -> None:
        """Bring an inspection of the front pads; `received_on` where it comes in later."""
        line = {
            "inspection": f"I-{car}-{on}", "inspected_at": f"{on}T09:00", "odometer": miles, "unit": "mi",
            "customer": {"id": "C-1"}, "vehicle": {"id": car, "first_used_on": "2022-01-01"},
            "readings": [
                {"item": "brake_pad", "position": place, "unit": "mm", "value": value}
                for place, value in zip(PLACES, pads, strict=False)
            ], **more,
        }  # fmt: skip
        self.bring(line, received_on or on)

    def bring(self, line: dict[str, Any], on: str) -> None:
        """Bring one line."""
        kept = keep_inspections(
            self.store, self.shop_id, [json.dumps(line)], at(on), "test", "only-for-tests", accepts_doubtful=True
        )
        assert [one.outcome for one in kept] in (["new"], ["corrected"])

    def forecast(self, on: str) -> None:
        """Forecast what has news."""
        forecast_windows(self.store, self.shop_id, at(on, 13))

    def score(self, on: str) -> int:
        """Score what has news; how many cars."""
        return score_forecasts(self.store, self.shop_id, at(on, 14))

    def scores(self) -> list[Row]:
        """All scores."""
        with self.store.read() as connection:
            return scores.scores_of_shop(connection, self.shop_id)


def at(on: str, hour: int = 12) -> datetime:
    return datetime.fromisoformat(on).replace(hour=hour, tzinfo=UTC) + timedelta(hours=6)


@pytest.fixture
def shop(database_url: str) -> Shop:
    """The shop, on either database."""
    return Shop(database_url)


def a_year(shop: Shop) -> None:
    """A forecast in March and the reading that scores it in December."""
    shop.inspect("2025-03-03", 30_000, 9.0, 9.0)
    shop.forecast("2025-03-03")
    assert shop.score("2025-03-03") == 1
    assert shop.scores() == []
    shop.inspect("2025-12-01", 40_000, 7.0, 7.5)
    shop.forecast("2025-12-01")
    assert shop.score("2025-12-01") == 1


def told(row: Row) -> tuple[object, ...]:
    return row["position"], row["forecast_on"], row["scored_on"], row["how"], row["found"]


def test_the_next_reading_scores_the_windows_as_they_were_made(shop: Shop) -> None:
    a_year(shop)
    found = shop.scores()
    spring, winter = date(2025, 3, 3), date(2025, 12, 1)
    assert sorted(map(told, found)) == [
        ("front_left", spring, winter, "measured", 7.0), ("front_right", spring, winter, "measured", 7.5),
    ]  # fmt: skip
    with shop.store.read() as connection:
        kept = {row["id"]: row for row in scores.windows_ever(connection, found[0]["vehicle_id"])}
    for row in found:
        window = kept[row["window_id"]]
        assert (window["as_of"], window["is_current"], window["position"]) == (spring, False, row["position"])
        assert 0 < row["place"] < 1 and 0 < row["chance"] < 1 and row["crps"] > 0 and not row["was_due"]


def test_scoring_twice_scores_nothing_twice(shop: Shop) -> None:
    a_year(shop)
    before = shop.scores()
    assert shop.score("2025-12-02") == 0
    assert shop.scores() == before
    # Even where somebody forgets what was scored.
    with shop.store.write() as connection:
        connection.execute(tables.scored_vehicles.delete())
    assert shop.score("2025-12-03") == 1
    assert [told(row) for row in shop.scores()] == [told(row) for row in before]


def test_a_correction_scores_again(shop: Shop) -> None:
    a_year(shop)
    place = shop.scores()[0]["place"]
    shop.inspect("2025-12-01", 40_000, 5.0, 7.5, received_on="2025-12-04")
    assert shop.score("2025-12-04") == 1
    found = {row["position"]: row for row in shop.scores()}
    assert len(found) == len(shop.scores()) == 2
    assert found["front_left"]["found"] == 5.0 and found["front_left"]["place"] < place


def test_a_reading_that_comes_in_late_takes_its_place(shop: Shop) -> None:
    a_year(shop)
    shop.inspect("2025-08-01", 35_000, 8.0, 8.0, received_on="2025-12-05")
    shop.score("2025-12-05")
    found = [row for row in shop.scores() if row["forecast_on"] == date(2025, 3, 3)]
    assert {row["scored_on"] for row in found} == {date(2025, 8, 1)}


def test_work_that_is_told_later_ends_a_window_unscored(shop: Shop) -> None:
    a_year(shop)
    work = {"item": "brake_pad", "position": "front", "did": "replaced"}
    shop.bring(
        {
            "visit": "RO-7", "vehicle": "V-1", "opened_at": "2025-06-02T09:00", "closed_at": "2025-06-02T16:00",
            "work_done": [work],
        },
        "2025-12-06",
    )  # fmt: skip
    assert shop.score("2025-12-06") == 1
    assert {(row["how"], row["scored_on"]) for row in shop.scores()} == {("changed", date(2025, 6, 2))}


def test_of_several_windows_of_a_day_the_last_counts(shop: Shop) -> None:
    shop.inspect("2025-03-03", 30_000, 9.0, 9.0)
    shop.forecast("2025-03-03")
    shop.inspect("2025-03-03", 30_000, 8.5, 8.5, received_on="2025-03-03T16:00")
    with shop.store.write() as connection:
        vehicle_id = connection.execute(select(tables.vehicles.c.id)).scalar_one()
    forecast_windows(shop.store, shop.shop_id, at("2025-03-03", 15), [vehicle_id])
    shop.inspect("2025-12-01", 40_000, 7.0, 7.5)
    shop.score("2025-12-01")
    with shop.store.read() as connection:
        last = {row["id"] for row in windows.windows_of(connection, vehicle_id)}
    assert {row["window_id"] for row in shop.scores()} == last


def test_what_came_from_a_file_is_looked_back_on(shop: Shop) -> None:
    """Three visits in one file, one forecast after them: two forecasts as of then, and none of what came later."""
    for on, miles, value in (("2024-01-08", 20_000, 10.0), ("2024-09-02", 29_000, 8.5), ("2025-05-05", 38_000, 7.0)):
        shop.inspect(on, miles, value, value, received_on="2025-06-02")
    shop.forecast("2025-06-02")
    shop.score("2025-06-02")
    days = {(row["forecast_on"], row["scored_on"], row["window_id"]) for row in shop.scores()}
    assert days == {(date(2024, 1, 8), date(2024, 9, 2), None), (date(2024, 9, 2), date(2025, 5, 5), None)}
    shop.inspect("2026-01-05", 46_000, 6.0, 6.0)
    shop.score("2026-01-05")
    made = [row for row in shop.scores() if row["window_id"] is not None]
    assert {(row["forecast_on"], row["scored_on"]) for row in made} == {(date(2025, 6, 2), date(2026, 1, 5))}
    assert len(shop.scores()) == 6
    card = look_at_scores(shop.store, shop.shop_id)
    assert (card.usual.count, card.as_made.count, card.looked_back.count) == (6, 2, 4)
    assert look_at_scores(shop.store, shop.shop_id, date(2026, 1, 1)).usual.count == 2


def test_a_handful_at_a_time_gets_through(shop: Shop) -> None:
    for car in ("V-1", "V-2", "V-3"):
        shop.inspect("2025-03-03", 30_000, 9.0, car=car)
    assert count_cars_to_score(shop.store, shop.shop_id) == 3
    done = []
    assert score_forecasts(shop.store, shop.shop_id, at("2025-03-04"), 2, done.append) == 2
    assert count_cars_to_score(shop.store, shop.shop_id) == 1 and done == [2]


def test_another_shop_is_left_alone(shop: Shop) -> None:
    other = add_shop(shop.store, "oak", "+13125550111")
    a_year(shop)
    assert score_forecasts(shop.store, other, at("2025-12-09")) == 0
    assert look_at_scores(shop.store, other).usual.count == 0


def test_a_planned_text_notes_the_windows_that_it_rests_on(demo: Demo) -> None:
    texts, uses, made = tables.texts, tables.window_uses, tables.due_windows
    with demo.house.store.read() as connection:
        planned = connection.execute(select(texts).where(texts.c.kind == "invite")).mappings().all()
        for text in planned:
            query = select(made.c.item, made.c.position, made.c.is_current, made.c.vehicle_id).join(
                uses, uses.c.window_id == made.c.id
            )
            found = connection.execute(query.where(uses.c.text_id == text["id"])).all()
            due = {tuple(one) for one in text["facts"]["items"]}
            # An advisory that leaves with the text rests on readings alone and has no window.
            present = {(row["item"], row["position"]) for row in windows.windows_of(connection, text["vehicle_id"])}
            assert {(row.item, row.position) for row in found} == due & present
            assert due & present
            assert all(row.is_current and row.vehicle_id == text["vehicle_id"] for row in found)
    assert any(text["reason"] == "due_work" for text in planned)


def test_the_clock_scores_by_itself_and_tells_of_texts(demo: Demo) -> None:
    """An invited car is read again: its windows are scored at the next tick, some of them under a text."""
    invite = demo.a_planned_invite()
    items = invite["facts"]["items"]
    assert look_at_scores(demo.house.store, demo.shop_id).as_made.count == 0
    with demo.house.store.read() as connection:
        query = select(tables.vehicles.c.code).where(tables.vehicles.c.id == invite["vehicle_id"])
        code = connection.execute(query).scalar_one()
        miles = connection.execute(
            select(func.max(tables.inspections.c.odometer_miles)).where(
                tables.inspections.c.vehicle_id == invite["vehicle_id"]
            )
        ).scalar_one()
    demo.at("2026-11-30T09:00")
    line = {
        "inspection": "I-again", "inspected_at": "2026-11-30T08:30", "odometer": round(miles + 300), "unit": "mi",
        "customer": {"id": "C-again"}, "vehicle": {"id": code},
        "readings": [
            {"item": item, "position": position, "value": 3.5}
            | ({"unit": "mm"} if item == "brake_pad" else {"unit": "32nds"})
            for item, position in items
            if item in ("brake_pad", "tire_tread")
        ],
    }  # fmt: skip
    assert line["readings"], items
    demo.house.keep_inspection(demo.shop_id, json.dumps(line), "test", accepts_doubtful=True)
    demo.run()
    card = look_at_scores(demo.house.store, demo.shop_id)
    assert card.as_made.count > 0 and card.texted.count == len(line["readings"])


def test_a_correction_that_takes_a_car_away_takes_its_scores_along(shop: Shop) -> None:
    """The inspection was another car's: the first one has no reading left that could have scored anything."""
    a_year(shop)
    with shop.store.read() as connection:
        bodies = [row["body"] for row in connection.execute(select(tables.inspections)).mappings()]
    for body in bodies:
        body["vehicle"]["id"] = "V-2"
        shop.bring(body, "2025-12-08")
    assert shop.score("2025-12-08") == 2
    with shop.store.read() as connection:
        codes = dict(connection.execute(select(tables.vehicles.c.id, tables.vehicles.c.code)).all())
    assert {codes[row["vehicle_id"]] for row in shop.scores()} == {"V-2"}
    assert shop.score("2025-12-09") == 0


def test_gauges_that_are_read_down_read_low(shop: Shop) -> None:
    """Half a mark is given back to each reading where the shop says that its gauges are read down."""
    a_year(shop)
    before = {row["position"]: row for row in shop.scores()}
    rules = {"gauges_round_down": True}
    assert change_rules(shop.store, shop.shop_id, ["timing"], rules, 0, "Avery Stone", "", at("2025-12-08")).version
    with shop.store.write() as connection:
        connection.execute(tables.scored_vehicles.delete())
    shop.score("2025-12-08")
    after = {row["position"]: row for row in shop.scores()}
    for position in PLACES:
        assert after[position]["found"] == before[position]["found"] + 0.25
        assert after[position]["was_due"] == before[position]["was_due"]


def test_a_car_that_is_forecast_every_night_is_not_counted_every_night(shop: Shop) -> None:
    """Of ten nights the first counts, and the one that a planned text rests on."""
    shop.inspect("2025-03-03", 30_000, 9.0, 9.0)
    with shop.store.read() as connection:
        vehicle_id = connection.execute(select(tables.vehicles.c.id)).scalar_one()
    for night in range(3, 13):
        forecast_windows(shop.store, shop.shop_id, at(f"2025-03-{night:02}", 13), [vehicle_id])
        if night == 7:
            note_a_text(shop, vehicle_id)
    shop.inspect("2025-12-01", 40_000, 7.0, 7.5)
    shop.score("2025-12-01")
    days = [(row["position"], row["forecast_on"]) for row in shop.scores()]
    first, used = date(2025, 3, 3), date(2025, 3, 7)
    assert sorted(days) == [("front_left", first), ("front_left", used), ("front_right", first)]
    card = look_at_scores(shop.store, shop.shop_id)
    assert (card.usual.count, card.texted.count) == (3, 1)


def note_a_text(shop: Shop, vehicle_id: int) -> None:
    with shop.store.write() as connection:
        phone_id = people.keep_phone(
            connection, shop.shop_id, "+13125550147", ("America/Chicago",), "mobile", at("2025-03-07")
        )
        text_id = outbox.plan_text(
            connection, shop.shop_id, "due_work", "test", at("2025-03-07"), phone_id=phone_id, number="+13125550147",
            language="en", facts={}, vehicle_id=vehicle_id,
        )  # fmt: skip
        assert text_id is not None
        scores.note_use(connection, shop.shop_id, text_id, vehicle_id, [("brake_pad", "front_left")])


def test_other_priors_look_back_anew_and_leave_alone_what_was_said(shop: Shop) -> None:
    """A shop that learned that its pads wear twice as fast: what is looked back on says so, what was made stays."""
    a_year(shop)
    shop.inspect("2024-06-03", 21_000, 10.5, 10.5, received_on="2025-12-04")
    shop.score("2025-12-04")
    before = {(row["position"], row["forecast_on"]): row for row in shop.scores()}
    lesson = WearLesson("brake_pad", (("every", math.log(2.0)),), cars=40)
    body = {"priors": ShopPriors(wear=(lesson,)).to_json(), "cars": 40}
    with shop.store.write() as connection:
        learned_priors.keep(connection, shop.shop_id, at("2025-12-08"), "the night", "learned", True, body, 0)
    assert shop.score("2025-12-09") == 1
    after = {(row["position"], row["forecast_on"]): row for row in shop.scores()}
    assert after.keys() == before.keys() and len(after) == 4
    for (position, on), row in after.items():
        was = before[(position, on)]
        if row["window_id"] is None:
            assert row["expected"] < was["expected"] - 0.3
        else:
            assert row["expected"] == was["expected"]
    assert shop.score("2025-12-10") == 0
