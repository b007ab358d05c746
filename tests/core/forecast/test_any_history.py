"""Whatever a shop enters, a forecast stays a forecast: walks every forecast item with cars drawn at random (seeded)."""

import json
import math
import random
from datetime import date, timedelta
from itertools import pairwise
from typing import Any, Literal, get_args

import numpy as np
import pytest

from followup.core.forecast.due import forecast_cars
from followup.core.forecast.evidence import LineOf
from followup.core.forecast.explain import explain, explain_in_full
from followup.core.forecast.history import CarHistory, history_of_lines
from followup.core.forecast.window import DueWindow
from followup.core.inspection import BadLine, read_line
from followup.core.item import DID, Field, Item
from followup.core.items import ALL, BY_CODE
from tests.core.forecast.test_evidence import assert_sound as assert_sound_evidence
from tests.core.forecast.told import NOW, visit
from tests.core.lines import line_text

CARS = 40
FORECAST = [item for item in ALL if item.is_forecast]


def entered(field: Field, draw: random.Random, day: date) -> Any:
    """Anything that may stand in that field."""
    match field.kind:
        case "number":
            return round(draw.uniform(field.least or 0, field.most or 100), draw.choice([0, 1]))
        case "numbers":
            return [draw.randint(0, 14) for _ in range(draw.choice([1, 3]))]
        case "choice":
            return draw.choice(field.choices)
        case "date":
            return (day - timedelta(days=draw.randint(0, 2500))).isoformat()
        case "date_code":
            return f"{draw.randint(1, 52):02d}{draw.randint(5, 20):02d}"
        case "month":
            return f"20{draw.randint(22, 29)}-{draw.randint(1, 12):02d}"
    return None


def reading(item: Item, draw: random.Random, day: date) -> dict[str, Any]:
    """One reading of that item with one or two of its fields."""
    fields = draw.sample(item.fields, k=min(len(item.fields), draw.choice([1, 2])))
    told = {"item": item.code, "position": draw.choice(item.positions)}
    for field in fields:
        if field.units:
            told.setdefault("unit", draw.choice(field.units))
        told[field.name] = entered(field, draw, day)
    return told


def is_taken(told: dict[str, Any]) -> bool:
    """True where the line is not refused."""
    try:
        read_line(line_text(**told), NOW, BY_CODE)
    except BadLine:
        return False
    return True


def car(number: int, draw: random.Random) -> list[dict[str, Any]]:
    """Up to six visits of one car: odometers that stand still, fall, or are missing; work of every kind."""
    day, odometer, visits = date(2022, 6, 1), draw.uniform(0, 150_000), []
    vehicle = {"id": f"V-{number}"}
    if draw.random() < 0.6:
        vehicle["first_used_on"] = date(draw.randint(2005, 2022), 1, 1).isoformat()
    for _ in range(draw.randint(1, 6)):
        day += timedelta(days=draw.choice([0, 1, 30, 200, 400]))
        odometer = odometer * draw.choice([1, 1, 1.6, 0.6]) + draw.choice([0, 1, 5_000, 20_000])
        miles = odometer if draw.random() < 0.85 else None
        told = visit(day.isoformat(), miles, vehicle=vehicle, inspection=f"I-{number}-{day}")
        if draw.random() < 0.4:
            told["tire_set"] = draw.choice(["summer", "winter"])
        good = [one for item in FORECAST if is_taken(told | {"readings": [one := reading(item, draw, day)]})]
        work = [{"item": item.code, "did": draw.choice(DID)} for item in FORECAST if draw.random() < 0.15]
        done = [one for one in work if good and is_taken(told | {"readings": good[:1], "work_done": [one]})]
        if good and is_taken(told | {"readings": good, "work_done": done}):
            visits.append(told | {"readings": good, "work_done": done})
    return visits


def car_of_every_item() -> CarHistory:
    """A diesel car on which every forecast item was read once, with one or two of its fields."""
    draw = random.Random(3)
    told = visit("2026-01-10", 60_000, vehicle={"id": "V-all", "powertrain": "diesel", "first_used_on": "2020-01-01"})
    good = []
    for item in FORECAST:
        tried = (
            one for _ in range(200) if is_taken(told | {"readings": [one := reading(item, draw, date(2026, 1, 10))]})
        )
        good.append(next(tried))
    return history_of_lines([read_line(line_text(**(told | {"readings": good})), NOW, BY_CODE)])[0]


@pytest.fixture(scope="module")
def cars() -> list[CarHistory]:
    draw = random.Random(11)
    lines = [one for number in range(CARS) for one in car(number, draw)]
    return history_of_lines(read_line(line_text(**one), NOW, BY_CODE) for one in lines)


@pytest.mark.parametrize("as_of", ["last", date(2023, 6, 1), date(2029, 6, 1)])
@pytest.mark.parametrize("kind", ["action", "legal"])
def test_any_history_gives_sound_windows(
    cars: list[CarHistory], as_of: date | Literal["last"], kind: Literal["action", "legal"]
) -> None:
    with np.errstate(all="raise", under="ignore"):
        found = forecast_cars(cars, as_of, kind)
    assert len({(one.vehicle, one.item, one.position) for one in found}) == len(found)
    if as_of == "last":
        assert {one.item for one in found} == {item.code for item in FORECAST}
    for one in found:
        assert_sound(one)


def assert_sound(one: DueWindow) -> None:
    """Dates in order and none before `as_of`, chances that rise, a curve that agrees with them, words without holes."""
    dates = [day for day in (one.early, one.likely, one.late) if day is not None]
    assert all(before <= after for before, after in pairwise([one.as_of, *dates])), one
    chances = [one.curve.already, *(chance for _, chance in one.chances)]
    assert all(0 <= before <= after <= 1 for before, after in pairwise(chances)), one
    assert not any(math.isnan(day) for day in one.curve.days)
    assert list(one.curve.days) == sorted(one.curve.days), one
    for days, chance in one.chances:
        assert abs(one.curve.chance(days) - chance) < 0.03, one
    assert 0 <= one.beyond_horizon <= 1
    assert DueWindow.from_json(json.loads(json.dumps(one.to_json()))).early == one.early
    assert not set("{}") & set(explain(one)) and "None" not in explain(one)


@pytest.mark.parametrize("as_of", ["last", date(2029, 6, 1)])
def test_any_history_gives_sound_evidence(cars: list[CarHistory], as_of: date | Literal["last"]) -> None:
    with np.errstate(all="raise", under="ignore"):
        found = forecast_cars(cars, as_of, with_stored_sets=True, with_evidence=True)
    for one in found:
        assert one.evidence is not None
        assert_sound_evidence(one.evidence)
        for line in explain_in_full(one):
            assert line.endswith(".") and not set("{}_") & set(line) and "None" not in line, line
    if as_of == "last":
        drawn = {line.of for one in found if one.evidence for line in one.evidence.lines}
        assert drawn == set(get_args(LineOf))
