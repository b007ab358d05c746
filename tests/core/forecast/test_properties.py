"""What holds of every forecast, whatever was measured: checked on histories that hypothesis invents.

The search is derandomized: the same histories each time, none kept between runs.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, timedelta
from itertools import pairwise
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as some

from followup.core.forecast.due import forecast_cars
from followup.core.forecast.history import CarHistory, history_of_lines
from followup.core.forecast.passage import Passage, first_passage
from followup.core.forecast.usage import HORIZONS, UsageAhead
from followup.core.forecast.wear import WearBelief
from followup.core.forecast.window import DueWindow
from followup.core.inspection import read_line
from followup.core.items import BY_CODE
from tests.core.forecast.told import pad, tread, visit
from tests.core.lines import line_text

# Later than any day here.
NOW = datetime(2060, 1, 1, 12, 0)  # noqa: DTZ001  # wall time at the shop
MILES_A_KM = 1 / 1.609344
MM_A_32ND = 25.4 / 32
SIDES = ("front_left", "front_right")
OTHERS = (
    {"item": "battery", "cca": 600, "cca_rated": 640, "changed_on": "2021-05-10"},
    {"item": "washer_fluid", "level": "ok"},
    {"item": "cabin_filter", "looks": "even", "changed_on": "2022-01-10"},
    {"item": "oil_service", "done_on": "2022-06-10", "done_odometer": 1_000},
    {"item": "brake_fluid", "water_percent": 1.1, "changed_on": "2022-01-10"},
    {"item": "tire_age", "position": "front_left", "date_code": "0818"},
    {"item": "wiper_blade", "position": "front", "looks": "even"},
)
quick = settings(max_examples=40, deadline=None, derandomize=True, database=None)


@dataclass(frozen=True)
class Past:
    """A car's visits: days apart, miles a day in between, tread and pads as they were read on two sides."""

    start: date
    odometer: float
    gaps: tuple[tuple[int, float], ...]
    treads: tuple[tuple[float, float], ...]
    pads: tuple[tuple[float, float], ...]
    others: tuple[int, ...]
    first_used: date | None

    def visits(self, shift_days: int = 0, in_metric: bool = False) -> list[dict[str, Any]]:
        """The visits as lines: later by so many days, or in kilometers and millimeters."""
        day, odometer, told = self.start + timedelta(days=shift_days), self.odometer, []
        vehicle: dict[str, Any] = {"id": "V-1", "class": "car", "driven": "front"}
        if self.first_used:
            vehicle["first_used_on"] = (self.first_used + timedelta(days=shift_days)).isoformat()
        for number, (gap, rate) in enumerate(self.gaps):
            day, odometer = day + timedelta(days=gap), odometer + round(gap * rate)
            is_last = number == len(self.gaps) - 1
            treads, pads = (zip(of[number], SIDES, strict=True) for of in (self.treads, self.pads))
            readings = [_depth(at, side, in_metric) for at, side in treads]
            readings += [pad(at, side) for at, side in pads]
            if is_last:
                readings += [OTHERS[one] for one in self.others]
            one = visit(day.isoformat(), odometer, *readings, vehicle=vehicle)
            if in_metric:
                one |= {"odometer": odometer / MILES_A_KM, "unit": "km"}
            told.append(one)
        return told


def _depth(at: float, side: str, in_metric: bool) -> dict[str, Any]:
    return tread(at * MM_A_32ND, side, unit="mm") if in_metric else tread(at, side)


@some.composite
def pasts(draw: some.DrawFn, *, others: bool = True) -> Past:
    """One to four visits; readings that fall, mostly, within what a gauge can show."""
    count = draw(some.integers(1, 4))
    sides = some.tuples(some.integers(0, 3), some.integers(0, 3))
    start = draw(some.dates(date(2023, 1, 1), date(2024, 6, 1)))
    return Past(
        start=start,
        odometer=float(draw(some.integers(2_000, 140_000))),
        gaps=tuple(draw(some.tuples(some.integers(20, 400), some.floats(2, 90))) for _ in range(count)),
        treads=tuple((float(12 - 2 * at - one[0]), float(12 - 2 * at - one[1])) for at in range(count)
                     if (one := draw(sides))),
        pads=tuple((float(11 - 1.5 * at - one[0]), float(11 - 1.5 * at - one[1])) for at in range(count)
                   if (one := draw(sides))),
        others=tuple(draw(some.sets(some.sampled_from(range(len(OTHERS))), max_size=4))) if others else (),
        first_used=draw(some.none() | some.dates(date(2008, 1, 1), date(2022, 1, 1))),
    )  # fmt: skip


Windows = dict[tuple[str, str], DueWindow]


def history(visits: list[dict[str, Any]]) -> CarHistory:
    """The history of one car."""
    (one,) = history_of_lines(read_line(line_text(**told), NOW, BY_CODE) for told in visits)
    return one


def found(visits: list[dict[str, Any]], as_of: date | str = "last") -> Windows:
    """The windows of the car by item and position."""
    return {(one.item, one.position): one for one in forecast_cars([history(visits)], as_of)}  # type: ignore[arg-type]  # mypy widens "last"


@quick
@given(pasts(), some.integers(0, 2000))
def test_windows_lie_ahead_and_in_order(past: Past, later: int) -> None:
    last = date.fromisoformat(past.visits()[-1]["inspected_at"][:10])
    as_of = last + timedelta(days=later)
    windows = found(past.visits(), as_of)
    assert windows
    for one in windows.values():
        dates = [day for day in (one.early, one.likely, one.late) if day is not None]
        assert all(before <= after for before, after in pairwise([as_of, *dates])), one
        # Who has no early date has no later one either.
        assert [one.early, one.likely, one.late] == [*dates, *[None] * (3 - len(dates))]


@quick
@given(pasts())
def test_chances_never_fall_with_the_days(past: Past) -> None:
    for one in found(past.visits()).values():
        chances = [one.chance_due_within(days) for days in (*range(0, 400, 9), *range(400, 4000, 90))]
        assert all(0.0 <= before <= after <= 1.0 for before, after in pairwise(chances)), one


@quick
@given(pasts())
def test_a_year_later_everything_is_a_year_later(past: Past) -> None:
    """1,461 days are four years to the day: the seasons stand where they stood, and so do the windows (to a day).

    A single year is 365 or 366 days of 365.25: the season shifts by a day at most, the windows by two.
    """
    plain = found(past.visits())
    for shift, slack in ((1461, 1), (365, 2)):
        moved = found([_told_later(one, shift) for one in past.visits(shift_days=shift)])
        assert plain.keys() == moved.keys()
        for at, one in plain.items():
            if one.item in ("tire_age", "washer_fluid") and shift == 365:
                continue  # a date code holds whole weeks; November 1 stands on another day of 365.25
            for before, after in ((one.early, moved[at].early), (one.likely, moved[at].likely)):
                assert (before is None) == (after is None)
                if before is not None and after is not None:
                    allowed = slack + (8 if one.item == "tire_age" else 0)
                    assert abs((after - before).days - shift) <= allowed, one


def _told_later(told: dict[str, Any], days: int) -> dict[str, Any]:
    """The dates inside the readings moved as well."""
    readings = []
    for reading in told["readings"]:
        moved = dict(reading)
        for name in ("changed_on", "done_on"):
            if name in moved:
                moved[name] = (date.fromisoformat(moved[name]) + timedelta(days=days)).isoformat()
        if "date_code" in moved:
            moved["date_code"] = f"{moved['date_code'][:2]}{int(moved['date_code'][2:]) + round(days / 365.25):02d}"
        readings.append(moved)
    return told | {"readings": readings}


@quick
@given(
    some.floats(2.0, 12.0), some.floats(0.1, 3.0), some.floats(0.05, 0.6), some.floats(0.3, 1.0), some.floats(-0.9, 0.9)
)
def test_less_left_or_faster_wear_is_never_due_later(
    value: float, less: float, rate: float, spread: float, correlation: float
) -> None:
    """Of one belief: with less left, or with a higher rate, every quantile comes no later and every chance is no less.

    By the whole way from readings this need not hold: a pad that is a little thinner may be the car's first, worn
    slowly, where a thick one must be a later one.
    """

    def passage(left: float, wear: float) -> Passage:
        columns = (np.log(wear), 0.06, left, spread**2, correlation * spread * 0.06**0.5)
        belief = WearBelief(*(np.array([one]) for one in columns), np.ones((3, 1)) / 3)
        usage = UsageAhead(np.full((1, len(HORIZONS)), 3.3), np.full((1, len(HORIZONS)), 0.05))
        fixed = (np.array([one]) for one in (4.0, 3.2, 1.1))
        return first_passage(belief, *fixed, usage, np.array([0]))

    plain = passage(value, rate)
    for other in (passage(value - less, rate), passage(value, rate * (1 + less))):
        for chance in (0.1, 0.25, 0.5, 0.75, 0.9):
            assert other.quantile(chance)[0] <= plain.quantile(chance)[0] * 1.005 + 0.5, chance
        for days in (30.0, 180.0, 700.0):
            assert other.chance_by(np.array([days]))[0] >= plain.chance_by(np.array([days]))[0] - 0.005, days


@quick
@given(some.integers(45, 110), some.integers(1, 20), some.sampled_from([tread, pad]))
def test_a_thinner_reading_is_never_due_later(tenths: int, less: int, read: Any) -> None:
    """One reading of a car of which nothing else is known: no explanation but wear competes."""
    likely = []
    for depth in (tenths / 10, max(tenths - less, 0) / 10):
        one = found([visit("2026-01-10", None, read(depth), vehicle={"id": "V-1"})])
        likely.append(next(iter(one.values())).likely)
    assert likely[0] is not None and likely[1] is not None
    assert likely[1] <= likely[0]


@quick
@given(pasts(others=False))
def test_a_change_of_unit_changes_nothing_but_the_gauge(past: Past) -> None:
    """Kilometers in place of miles: the same windows. Millimeters in place of 32nds: the same values, read with another
    gauge, so the windows are the same but for its rounding (a tread in tenths is known a little better)."""
    plain = found(past.visits())
    kilometers = [one | {"odometer": one["odometer"] / MILES_A_KM, "unit": "km"} for one in past.visits()]
    for at, one in found(kilometers).items():
        assert (one.early, one.likely, one.late, one.now) == (
            plain[at].early, plain[at].likely, plain[at].late, plain[at].now
        )  # fmt: skip
    for at, one in found(past.visits(in_metric=True)).items():
        if one.item == "brake_pad":
            assert (one.early, one.likely, one.late) == (plain[at].early, plain[at].likely, plain[at].late)
        assert one.is_past == plain[at].is_past


@quick
@given(pasts())
def test_the_order_of_the_lines_changes_nothing(past: Past) -> None:
    visits = past.visits()
    assert found(visits) == found(list(reversed(visits)))


@quick
@given(pasts(), pasts())
def test_a_car_is_forecast_as_if_it_were_alone(past: Past, other: Past) -> None:
    alone = forecast_cars([history(past.visits())], "last")
    beside = forecast_cars([history(past.visits()), history(other.visits())], "last")[: len(alone)]
    for one, with_other in zip(alone, beside, strict=True):
        assert (one.early, one.likely, one.late, one.is_past) == (
            with_other.early, with_other.likely, with_other.late, with_other.is_past
        )  # fmt: skip
        assert one.curve.already == pytest.approx(with_other.curve.already, abs=1e-9)
