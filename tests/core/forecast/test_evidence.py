"""What a window rests on: the line with its band against the model, readings with the reason why one does not count."""

from __future__ import annotations

import json
from datetime import date
from itertools import pairwise
from typing import Any

import numpy as np
import pytest

from followup.core.forecast.due import forecast_cars
from followup.core.forecast.evidence import Evidence, ShownLine
from followup.core.forecast.season import driving_clock
from followup.core.forecast.window import DueWindow
from tests.core.forecast.told import history, pad, tread, visit, windows

CORNERS = ("front_left", "front_right", "rear_left", "rear_right")
LIMITS = {"tire_tread": 4.0, "brake_pad": 3.0, "brake_fluid": 3.0}


def seen(*visits: dict[str, Any], as_of: str = "last", **more: Any) -> dict[tuple[str, str], DueWindow]:
    """Windows with their evidence, by item and position."""
    return windows(*visits, as_of=as_of, with_evidence=True, **more)


def evidence(window: DueWindow) -> Evidence:
    """The evidence of a window that was asked for it."""
    assert window.evidence is not None
    return window.evidence


def at(line: ShownLine, on: date) -> tuple[float, float, float]:
    """Low, likely and high of a line on a day, straight between its points."""
    days = [one.on.toordinal() for one in line.points]
    values = [[getattr(one, name) for one in line.points] for name in ("low", "likely", "high")]
    low, likely, high = (float(np.interp(on.toordinal(), days, of)) for of in values)
    return low, likely, high


def water(percent: float, **more: Any) -> dict[str, Any]:
    """A reading of brake fluid."""
    return {"item": "brake_fluid", "water_percent": percent, **more}


VISITS = [
    visit("2024-06-10", 40_000, tread(9), tread(9, "front_right"), pad(9), water(1.0, changed_on="2024-01-10")),
    visit("2025-06-10", 52_000, tread(7), tread(7, "front_right"), pad(7.5)),
    visit("2026-01-10", 60_000, tread(6), tread(5, "front_right"), pad(6.5), water(1.9)),
]


@pytest.mark.parametrize("as_of", ["2026-01-10", "2026-03-01"])
@pytest.mark.parametrize("visits", [VISITS, VISITS[2:], VISITS[:1]])
def test_the_line_meets_the_limit_on_the_days_of_the_window(visits: list[dict[str, Any]], as_of: str) -> None:
    """By definition of the window: 10, 50 and 90 % are past the limit on its early, likely and late day."""
    met = 0
    for (item, _), one in seen(*visits, as_of=as_of).items():
        line = evidence(one).lines[0]
        low, likely, high = 0, 1, 2
        early, late = (low, high) if item != "brake_fluid" else (high, low)
        for on, edge in ((one.early, early), (one.likely, likely), (one.late, late)):
            if on is not None and one.as_of < on < line.points[-1].on:
                assert at(line, on)[edge] == pytest.approx(LIMITS[item], abs=0.02)
                met += 1
    assert met >= 6


@pytest.mark.parametrize("visits", [VISITS, VISITS[2:], [visit("2026-01-10", 60_000, tread(4.5), pad(3.5))]])
def test_the_band_holds_eight_of_ten_drawn_from_the_belief(visits: list[dict[str, Any]]) -> None:
    """Value, wear rate and distance drawn from what the window keeps of the belief, walked to days ahead and behind."""
    random = np.random.default_rng(5)
    clock = driving_clock()
    found = forecast_cars([history(*visits)], "last", with_ahead=True, with_evidence=True)
    for one in (one for one in found if one.item in ("tire_tread", "brake_pad")):
        ahead, line = one.ahead, evidence(one).lines[0]
        assert ahead is not None
        spread = [[ahead.value_variance, ahead.covariance], [ahead.covariance, ahead.log_rate_variance]]
        value, log_rate = random.multivariate_normal([ahead.value, ahead.log_rate], spread, 200_000).T
        origin = float(ahead.on.toordinal())
        table = np.array(ahead.miles).T
        for days in (30, 120, 300, 600):
            horizon = float(clock.at(np.array(origin + days)) - clock.at(np.array(origin)))
            mean, variance = (np.interp(np.log(horizon), np.log(table[0]), of) for of in table[1:])
            miles = np.exp(random.normal(mean, np.sqrt(variance), len(value))) * horizon / 1000
            drawn = np.quantile(np.maximum(value - np.exp(log_rate) * miles, 0), (0.1, 0.5, 0.9))
            # How uncertain the distance is goes by the horizon to each value, here by the day: a little else.
            on = date.fromordinal(int(origin) + days)
            if on < line.points[-1].on:
                width = float(drawn[2] - drawn[0])
                assert max(np.abs(np.subtract(at(line, on), drawn))) < 0.08 * width, (one.item, days)
        if one.likely is not None and one.likely > one.as_of:
            until = clock.at(np.array(float(one.likely.toordinal()))) - clock.at(np.array(origin))
            mean, variance = (np.interp(np.log(until), np.log(table[0]), of) for of in table[1:])
            driven = np.exp(random.normal(mean, np.sqrt(variance), len(value))) * float(until) / 1000
            # As likely as not at its limit on the likely day.
            assert np.mean(value - np.exp(log_rate) * driven <= LIMITS[one.item]) == pytest.approx(0.5, abs=0.03)
        begin = line.points[0]
        if begin.on == date(2024, 6, 10):
            drawn = np.quantile(value + np.exp(log_rate) * 20, (0.1, 0.5, 0.9))
            assert (begin.low, begin.likely, begin.high) == pytest.approx(drawn, abs=0.15)


def test_the_band_is_narrowest_where_it_was_measured() -> None:
    line = evidence(seen(*VISITS)["tire_tread", "front_left"]).lines[0]
    widths = [one.high - one.low for one in line.points if one.high is not None and one.low is not None]
    narrowest = line.points[widths.index(min(widths))].on
    assert date(2024, 6, 10) <= narrowest <= date(2026, 1, 10)
    assert widths[-1] == max(widths)


def test_readings_as_entered_and_as_counted() -> None:
    one = evidence(
        seen(visit("2026-01-10", 60_000, tread(5.6, unit="mm"), pad(6, how="wheel_on")))["tire_tread", "front_left"]
    )
    reading = one.readings[0]
    assert (reading.measured, reading.measured_unit, reading.odometer_miles) == (5.6, "mm", 60_000)
    assert reading.value == pytest.approx(5.6 / (25.4 / 32))
    assert reading.error is not None and 0.5 < reading.error < 0.7
    assert one.unit == "32nds" and reading.apart is None


def four(front: float, rear: float) -> tuple[dict[str, Any], ...]:
    """Treads of four tires."""
    return tuple(tread(front if corner.startswith("front") else rear, corner) for corner in CORNERS)


@pytest.mark.parametrize(
    ("apart", "visits"),
    [
        ("replaced", [
            visit("2025-01-10", 50_000, *four(3, 7), work_done=[
                {"item": "tire_tread", "position": "front", "did": "replaced"}]),
            visit("2026-01-10", 60_000, *four(9, 6)),
        ]),
        ("rotated", [
            visit("2025-01-10", 50_000, *four(5, 9), work_done=[{"item": "tire_rotation", "did": "rotated"}]),
            visit("2026-01-10", 60_000, *four(7, 4)),
        ]),
        ("seen", [visit("2025-01-10", 50_000, *four(4.5, 6)), visit("2026-01-10", 60_000, *four(10, 5))]),
        ("other_set", [
            visit("2025-04-10", 50_000, *four(8, 8), tire_set="winter"),
            visit("2026-01-10", 60_000, *four(7, 7), tire_set="all_season"),
        ]),
    ],
)  # fmt: skip
def test_a_reading_of_another_part_says_why_it_does_not_count(apart: str, visits: list[dict[str, Any]]) -> None:
    found = evidence(seen(*visits)["tire_tread", "front_left"])
    assert [one.apart for one in found.readings] == [apart, None]
    # The line is that of the present part.
    assert found.lines[0].points[0].on >= date(2025, 1, 10)


def test_odometer_entries_that_were_left_out_or_put_right() -> None:
    """11,000 miles a year since January 2020; then kilometers, or a third year that fell."""
    years = [visit(f"{2021 + n}-06-10", 15_850 + 11_000 * n, tread(9 - n)) for n in range(4)]
    typed_km = visit("2025-06-10", round(59_850 * 1.609344), tread(6))
    found = evidence(seen(*years, typed_km)["tire_tread", "front_left"]).odometer
    assert found is not None
    assert [(on, typed) for on, typed, _ in found.put_right] == [(date(2025, 6, 10), round(59_850 * 1.609344))]
    assert found.put_right[0][2] == pytest.approx(59_850, rel=1e-4)
    wrong = [*years[:2], visit("2023-06-10", 4_400, tread(7)), visit("2024-06-10", 48_850, tread(6))]
    found = evidence(seen(*wrong)["tire_tread", "front_left"]).odometer
    assert found is not None and found.left_out == ((date(2023, 6, 10), 4_400),)
    assert [miles for _, miles in found.used] == [15_850, 26_850, 48_850]


def test_how_much_is_this_cars_own_grows_with_its_readings() -> None:
    one, many = (evidence(seen(*visits)["tire_tread", "front_left"]) for visits in (VISITS[2:], VISITS))
    assert one.known_share is not None and many.known_share is not None
    assert one.own_share is not None and many.own_share is not None
    assert 0 <= one.own_share <= one.known_share < many.known_share <= 1
    assert many.own_share > one.own_share + 0.2


def test_an_oil_service_is_a_straight_count() -> None:
    """274 days and 7,500 miles less 30 days and 500 miles of notice: 244 days, 7,000 miles are all of it."""
    oil = {"item": "oil_service", "done_on": "2025-11-10", "done_odometer": 58_000}
    one = seen(visit("2026-01-10", 60_000, oil))["oil_service", ""]
    by: dict[str, ShownLine] = {line.of: line for line in evidence(one).lines}
    for name, used in (("days", 61 / 244), ("miles", 2_000 / 7_000)):
        on_the_day = next(point for point in by[name].points if point.on == date(2026, 1, 10))
        assert on_the_day.likely == pytest.approx(100 * used)
    assert one.likely is not None
    first = max(float(np.interp(one.likely.toordinal(), [p.on.toordinal() for p in line.points],
                                [p.likely for p in line.points])) for line in by.values())  # fmt: skip
    assert first == pytest.approx(100, abs=1)
    assert evidence(one).interval == (274, 7_500)


def test_a_battery_is_as_likely_good_as_not_on_its_likely_day() -> None:
    battery = {"item": "battery", "verdict": "good", "changed_on": "2023-01-10"}
    one = seen(visit("2026-01-10", 60_000, battery))["battery", ""]
    line = evidence(one).lines[0]
    shares = {point.on: point.likely for point in line.points}
    assert one.likely is not None and shares[one.likely] == pytest.approx(0.5, abs=0.01)
    assert shares[date(2023, 1, 10)] == shares[date(2026, 1, 10)] == 1.0
    # Median 4.5 years; 80 % lie within exp(+-1.2816 x .35).
    assert evidence(one).life_days == pytest.approx(tuple(4.5 * 365.25 * f for f in (0.6386, 1, 1.5660)), rel=1e-3)


def test_washer_fluid_runs_straight_down_to_its_mark() -> None:
    one = seen(visit("2026-05-10", 60_000, {"item": "washer_fluid", "level": "ok"}))["washer_fluid", ""]
    found = evidence(one)
    assert found.marks == (("full", 2.0), ("ok", 1.5), ("low", 0.5), ("empty", 0.0))
    for on, edge in ((one.early, 0), (one.likely, 1), (one.late, 2)):
        assert on is not None and at(found.lines[0], on)[edge] == pytest.approx(0.5, abs=0.02)
    # 70 days from ok to low in summer.
    assert one.likely is not None and (one.likely - one.as_of).days == 70


def test_a_set_off_the_car_stands_still_on_the_chart_and_says_until_when() -> None:
    visits = [visit("2026-01-10", 60_000, tread(9), tire_set="winter")]
    found = evidence(seen(*visits, as_of="2026-07-01")["tire_tread", "front_left"])
    assert found.season is not None and not found.season.is_on and found.season.label == "winter"
    assert found.season.changes_on.month == 11
    line = found.lines[0]
    assert at(line, date(2026, 5, 1)) == pytest.approx(at(line, date(2026, 10, 15)), abs=0.02)
    assert at(line, date(2026, 12, 1))[1] < at(line, date(2026, 10, 15))[1] - 0.05


def test_windows_kept_before_there_was_evidence_still_load() -> None:
    for one in seen(*VISITS).values():
        kept = json.loads(json.dumps(one.to_json()))
        back = DueWindow.from_json(kept)
        assert back.evidence is not None and back.evidence.to_json() == evidence(one).to_json()
        old = {name: value for name, value in kept.items() if name not in ("evidence", "stored_set", "ahead")}
        assert DueWindow.from_json(old).evidence is None
        assert DueWindow.from_json(old).likely == one.likely


def test_what_was_not_asked_for_costs_nothing_and_changes_nothing() -> None:
    plain, asked = windows(*VISITS), seen(*VISITS)
    assert all(one.evidence is None and "evidence" not in one.to_json() for one in plain.values())
    for place, one in asked.items():
        told = one.to_json()
        told.pop("evidence")
        assert told == plain[place].to_json()


def assert_sound(found: Evidence) -> None:
    """Days that rise, bands around their line, nothing below nothing, plain JSON."""
    for line in found.lines:
        assert all(before.on < after.on for before, after in pairwise(line.points)), line
        for point in line.points:
            low, high = (point.likely if one is None else one for one in (point.low, point.high))
            assert 0 <= low <= point.likely + 1e-6 <= high + 2e-6, point
    assert Evidence.from_json(json.loads(json.dumps(found.to_json(), allow_nan=False))).to_json() == found.to_json()
