"""Inspections twice, corrected, out of order, with forecasts in between: the forecast is that of a clean load.

Source: this project's own rule. The clean load is the demo's file in the order of time, read into an empty shop.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from pathlib import Path
from random import Random
from typing import Any

import pytest

from followup.rehearsal import demo_shop
from followup.storage import inspections, people, windows
from followup.storage.store import Store, make_engine
from followup.workflows.forecast_windows import count_cars_with_news, forecast_windows
from followup.workflows.keep_inspections import keep_inspections
from tests.shop_of_tests import BEGIN, add_shop

SECRET = "only-for-tests"
CARS = 8
# Three with every check, all ten in the long runs.
SEEDS = [*range(3), *(pytest.param(one, marks=pytest.mark.faults) for one in range(3, 10))]


def _lines() -> list[str]:
    """What the demo tells of some cars, oldest first."""
    with (demo_shop.demo_data() / "inspections.jsonl").open(encoding="utf-8") as file:
        told = [json.loads(line) for line in file]
    cars = list(dict.fromkeys(_car(one) for one in told))[:CARS]
    return [json.dumps(one) for one in told if _car(one) in cars]


def _car(told: dict[str, Any]) -> str:
    vehicle = told["vehicle"]
    return str(vehicle["id"] if isinstance(vehicle, dict) else vehicle)


def _wrong(line: str, random: Random) -> str:
    """The same line as it was typed at first: a number of it was misread."""
    told = json.loads(line)
    numbers = [one for one in told["readings"] if isinstance(one.get("value"), int | float)]
    if numbers:
        random.choice(numbers)["value"] += 1
    else:
        told["odometer"] = told.get("odometer", 1000) + 37
    return json.dumps(told)


def _muddled(lines: list[str], random: Random) -> list[str]:
    """Inspections in any order, some twice, some wrong before they were right, some wrong ones fed again at the end.
    Lines of visits stay in order: the last one of a visit is what it was."""
    visits = [line for line in lines if "inspection" not in json.loads(line)]
    checked = [line for line in lines if "inspection" in json.loads(line)]
    feeds = list(zip(sorted(random.random() for _ in visits), visits, strict=True))
    again = []
    for at, line in [(random.random(), line) for line in checked]:
        feeds.append((at, line))
        if random.random() < 0.4:
            wrong = _wrong(line, random)
            feeds.append((at * random.random(), wrong))
            again.append(wrong)
        if random.random() < 0.3:
            feeds.append((random.random() * (1 - at) + at, line))
    return [line for _, line in sorted(feeds)] + again


def _feed(store: Store, shop_id: int, lines: list[str]) -> list[str]:
    """Bring lines in; what they were refused for (a visit of a car that is not known yet) is fed again."""
    kept = keep_inspections(store, shop_id, lines, BEGIN, "test", SECRET, accepts_doubtful=True)
    done = list(zip(lines, kept, strict=True))
    refused = [line for line, one in done if one.outcome == "rejected"]
    if len(refused) < len(lines) and refused:
        _feed(store, shop_id, refused)
    return [one.outcome for _, one in done]


def _forecast(store: Store, shop_id: int) -> dict[tuple[str, str, str], Any]:
    """The present window of each car, item and position."""
    forecast_windows(store, shop_id, BEGIN)
    assert count_cars_with_news(store, shop_id) == 0
    with store.read() as connection:
        return {
            (car["code"], row["item"], row["position"]): row["body"]
            for car in people.all_vehicles(connection, shop_id)
            for row in windows.windows_of(connection, car["id"])
        }


@pytest.fixture(scope="module")
def clean(tmp_path_factory: pytest.TempPathFactory) -> dict[tuple[str, str, str], Any]:
    store = Store(make_engine(f"sqlite+pysqlite:///{tmp_path_factory.mktemp('clean') / 'shop.db'}"))
    shop_id = add_shop(store)
    # A visit that is opened and closed is one line corrected by another.
    assert set(_feed(store, shop_id, _lines())) == {"new", "corrected"}
    found = _forecast(store, shop_id)
    store.close()
    assert len(found) > 50
    return found


@pytest.fixture(params=SEEDS)
def random(request: pytest.FixtureRequest) -> Random:
    return Random(f"orders {request.param}")


def test_a_muddled_load_is_forecast_as_a_clean_one(
    clean: dict[tuple[str, str, str], Any], random: Random, tmp_path: Path
) -> None:
    store = Store(make_engine(f"sqlite+pysqlite:///{tmp_path / 'shop.db'}"))
    shop_id = add_shop(store)
    feed = _muddled(_lines(), random)
    while feed:
        many = random.randint(1, 40)
        _feed(store, shop_id, feed[:many])
        feed = feed[many:]
        if random.random() < 0.3:
            forecast_windows(store, shop_id, BEGIN)
    assert _differences(_forecast(store, shop_id), clean) == []
    # The file as a whole once more changes no inspection, and nothing has news.
    outcomes = _feed(store, shop_id, _lines())
    assert set(_kinds(outcomes)) == {"unchanged"}
    assert _differences(_forecast(store, shop_id), clean) == []
    store.close()


def _differences(found: Any, wanted: Any, where: str = "") -> list[str]:
    """Where the two are not the same, but for the last digits of numbers: they go by how many cars are
    computed side by side."""
    if isinstance(wanted, dict) and isinstance(found, dict) and set(found) == set(wanted):
        return [one for key in wanted for one in _differences(found[key], wanted[key], f"{where} {key}")]
    if isinstance(wanted, list) and isinstance(found, list) and len(found) == len(wanted):
        return [one for pair in enumerate(zip(found, wanted, strict=True)) for one in _of_pair(pair, where)]
    if isinstance(wanted, float) and isinstance(found, float) and found == pytest.approx(wanted, rel=1e-6, abs=1e-12):
        return []
    return [] if found == wanted else [f"{where}: {found} and not {wanted}"]


def _of_pair(pair: tuple[int, tuple[Any, Any]], where: str) -> list[str]:
    place, (found, wanted) = pair
    return _differences(found, wanted, f"{where} {place}")


def _kinds(outcomes: list[str]) -> Iterator[str]:
    for line, outcome in zip(_lines(), outcomes, strict=True):
        if "inspection" in json.loads(line):
            yield outcome


def test_what_comes_while_a_forecast_is_made_is_forecast_too(
    database_url: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A long import stamps its lines with the instant at which it began."""
    store = Store(make_engine(database_url))
    shop_id = add_shop(store)
    lines = [line for line in _lines() if "inspection" in json.loads(line)]
    car = _car(json.loads(lines[0]))
    theirs = [line for line in lines if _car(json.loads(line)) == car]
    assert len(theirs) > 1
    _feed(store, shop_id, theirs[:1])
    read = windows.known_of_cars

    def read_and_bring(*given: Any) -> Any:
        monkeypatch.setattr(windows, "known_of_cars", read)
        found = read(*given)
        other = Store(make_engine(database_url))
        _feed(other, shop_id, theirs[1:])
        other.close()
        return found

    with store.read() as connection:
        assert windows.cars_with_news(connection, shop_id) == [1]
    monkeypatch.setattr(windows, "known_of_cars", read_and_bring)
    forecast_windows(store, shop_id, BEGIN, [1])
    assert count_cars_with_news(store, shop_id) == 1
    assert forecast_windows(store, shop_id, BEGIN) == 1
    assert count_cars_with_news(store, shop_id) == 0
    with store.read() as connection:
        assert len(inspections.bodies_of_vehicle(connection, 1)) == len(theirs)
    store.close()


def test_a_person_may_go_back_to_what_was_there_first(sqlite_url: str) -> None:
    store = Store(make_engine(sqlite_url))
    shop_id = add_shop(store)
    right = next(line for line in _lines() if "inspection" in json.loads(line))
    wrong = _wrong(right, Random(1))

    def bring(line: str, *, is_by_hand: bool = False) -> str:
        kept = keep_inspections(
            store, shop_id, [line], BEGIN, "test", SECRET, accepts_doubtful=True, is_by_hand=is_by_hand
        )
        return next(iter(kept)).outcome

    assert [bring(right), bring(wrong), bring(right)] == ["new", "corrected", "unchanged"]
    assert [bring(right, is_by_hand=True), bring(wrong)] == ["corrected", "unchanged"]
    store.close()
