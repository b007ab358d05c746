"""A top-off at the shop begins the forecast anew, drops what it makes needless, and is no visit."""

from __future__ import annotations

import json
from collections.abc import Iterator
from datetime import date, timedelta
from pathlib import Path

import pytest

from followup.core.forecast.window import DueCurve
from followup.storage import inspections, outbox, people, tables, windows
from followup.wiring import House
from followup.workflows.forecast_windows import forecast_windows
from followup.workflows.keep_top_off import keep_top_off, what_is_topped_off
from tests.core.lines import line_told
from tests.shop_of_tests import BEGIN, open_test_house

NUMBER = "+13125550147"
Car = tuple[House, int, int]


@pytest.fixture
def car(sqlite_url: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Car]:
    """A car whose washer fluid was low three weeks ago, with a phone."""
    house, shop_id = open_test_house(sqlite_url, tmp_path, monkeypatch)
    told = line_told(
        inspected_at="2026-11-03T09:00", customer={"id": "C-1", "phone": NUMBER}, odometer=41_230, unit="mi",
        vehicle={"id": "V-1", "powertrain": "gasoline"},
        readings=[{"item": "washer_fluid", "level": "low"}, {"item": "coolant", "level": "ok"}],
    )  # fmt: skip
    kept = house.keep_inspection(shop_id, json.dumps(told), "test")
    assert kept.vehicle_id is not None
    yield house, shop_id, kept.vehicle_id
    house.close()


def due_in_days(car: Car, item: str) -> float:
    """Days from today until the item is due, as likely as not."""
    with car[0].store.read() as connection:
        row = next(one for one in windows.windows_of(connection, car[2]) if one["item"] == item)
    return DueCurve.from_json(row["body"]["curve"]).quantile(0.5)


def top_off(car: Car, items: list[str], odometer: float | None = None) -> dict[str, str]:
    """Somebody tops off."""
    house, shop_id, vehicle_id = car
    return keep_top_off(house.store, shop_id, vehicle_id, items, "1/2 quart", odometer, "Rui", house.now())


def test_what_was_topped_off_is_full_again_and_the_rest_stays(car: Car) -> None:
    """Washer fluid lasts 70 days, less in winter (the catalogue's figure, common practice)."""
    assert due_in_days(car, "washer_fluid") == 0
    coolant = due_in_days(car, "coolant")
    assert top_off(car, ["washer_fluid"]) == {}
    forecast_windows(car[0].store, car[1], car[0].now(), [car[2]])
    assert 20 < due_in_days(car, "washer_fluid") < 90
    assert due_in_days(car, "coolant") == coolant


def test_a_queued_invite_to_it_drops_and_other_texts_stay(car: Car) -> None:
    house, shop_id, vehicle_id = car
    with house.store.write() as connection:
        phone = people.find_phone(connection, shop_id, NUMBER)
        assert phone is not None
        for code in ("free_service", "due_work"):
            outbox.plan_text(
                connection, shop_id, code, "test", BEGIN, phone_id=phone["id"], number=NUMBER, language="en", facts={},
                vehicle_id=vehicle_id, due_at=BEGIN + timedelta(hours=2),
            )  # fmt: skip
    assert top_off(car, ["washer_fluid"]) == {}
    with house.store.read() as connection:
        states = {text["reason"]: text["state"] for text in outbox.texts_of_phone(connection, phone["id"])}
    assert states == {"free_service": "dropped", "due_work": "planned"}


def test_it_is_no_visit_and_leaves_work_odometer_and_a_line_of_the_audit_trail(car: Car) -> None:
    house, _, vehicle_id = car
    with house.store.read() as connection:
        visits = len(inspections.visits_of_vehicle(connection, vehicle_id))
    assert top_off(car, ["washer_fluid", "coolant", "coolant"], 41_900) == {}
    with house.store.read() as connection:
        assert len(inspections.visits_of_vehicle(connection, vehicle_id)) == visits
        work = inspections.work_of_vehicle(connection, vehicle_id)
        told = inspections.odometers_told(connection, vehicle_id)
        trail = [row._mapping for row in connection.execute(tables.audit.select())]
    assert [(one["item"], one["did"], one["on"]) for one in work] == [
        ("washer_fluid", "topped_off", date(2026, 11, 24)), ("coolant", "topped_off", date(2026, 11, 24)),
    ]  # fmt: skip
    assert [(one["miles"], one["told_by"]) for one in told] == [(41_900, "Rui")]
    assert (trail[-1]["who"], trail[-1]["after"]["how_much"]) == ("Rui", "1/2 quart")


@pytest.mark.parametrize(
    ("items", "odometer", "field"),
    [
        ([], None, "what"),
        (["brake_fluid"], None, "what"),
        (["diesel_exhaust_fluid"], None, "what"),
        (["made_up"], None, "what"),
        (["washer_fluid"], 41_000, "odometer"),
        (["washer_fluid"], 241_000, "odometer"),
    ],
)
def test_what_cannot_be_is_told_and_nothing_is_kept(
    car: Car, items: list[str], odometer: float | None, field: str
) -> None:
    """Brake fluid is never topped off before pads and leaks are looked at (the trade's rule)."""
    assert list(top_off(car, items, odometer)) == [field]
    with car[0].store.read() as connection:
        assert inspections.work_of_vehicle(connection, car[2]) == []


def test_the_shops_free_services_stand_first(car: Car) -> None:
    found = what_is_topped_off(car[0].store, car[1], None)
    assert {item.code for item, much in found[:3]} == {"engine_oil", "coolant", "washer_fluid"}
    assert [much for item, much in found if item.code == "engine_oil"] == ["up to 1 quart"]
    assert "brake_fluid" not in {item.code for item, _ in found}
