"""The edges that a real shop's readings come to, one test each."""

import math
from datetime import date
from itertools import pairwise

import numpy as np
import pytest

from followup.core.forecast.odometer import track
from followup.core.forecast.priors import UsagePrior
from followup.core.forecast.window import DueWindow
from followup.core.item import MILES_PER_KM
from tests.core.forecast.told import history, pad, tread, visit, window, windows


def likely_days(one: DueWindow) -> int:
    """Days from `as_of` to the likely date."""
    assert one.likely is not None
    return (one.likely - one.as_of).days


def is_sound(one: DueWindow) -> bool:
    """Dates in order and not before `as_of`, chances rising, all of them finite."""
    dates = [day for day in (one.early, one.likely, one.late) if day is not None]
    chances = [chance for _, chance in one.chances]
    return (
        all(before <= after for before, after in pairwise([one.as_of, *dates]))
        and all(0 <= before <= after <= 1 for before, after in pairwise(chances))
        and all(math.isfinite(chance) for chance in chances)
    )


def test_edge_one_reading() -> None:
    one = window(visit("2026-01-10", 60_000, tread(7)))
    assert is_sound(one)
    assert one.because.readings_used == 1
    # 3/32 left at the usual .21 a thousand miles and some 29 miles a day: about a year and a half.
    assert 300 < likely_days(one) < 800


def test_edge_identical_odometers() -> None:
    one = window(visit("2026-01-10", 60_000, tread(7)), visit("2026-03-10", 60_000, tread(7)))
    assert is_sound(one)


def test_edge_flat_readings_follow_the_prior() -> None:
    flat = window(visit("2025-01-10", 50_000, tread(7)), visit("2026-01-10", 60_000, tread(7)))
    falling = window(visit("2025-01-10", 50_000, tread(10)), visit("2026-01-10", 60_000, tread(7)))
    assert is_sound(flat)
    assert likely_days(falling) < likely_days(flat) < 3 * likely_days(falling)


def test_edge_reading_below_the_limit_is_due_on_as_of() -> None:
    one = window(visit("2026-01-10", 60_000, tread(3)), as_of="2026-02-01")
    assert one.early == one.likely == one.late == date(2026, 2, 1)
    assert {chance for _, chance in one.chances} == {1.0}
    assert one.is_past
    assert one.beyond_horizon == 0.0


def test_edge_reading_just_above_the_limit_has_no_negative_dates() -> None:
    one = window(visit("2026-01-10", 60_000, tread(4.2)))
    assert is_sound(one)
    assert 0.2 < one.curve.already < 0.6


def test_edge_reading_above_new_depth() -> None:
    one = window(visit("2026-01-10", 60_000, tread(14)))
    assert is_sound(one)


def test_edge_told_install_that_the_reading_contradicts_is_not_believed() -> None:
    told = {"item": "tire_tread", "position": "front", "did": "replaced", "on": "2025-12-01", "odometer": 59_000}
    contradicted = window(
        visit("2026-01-10", 60_000, tread(5)), visit("2026-01-11", 60_010, tread(5), work_done=[told])
    )
    agreed = window(visit("2026-01-10", 60_000, tread(10)), visit("2026-01-11", 60_010, tread(10), work_done=[told]))
    assert contradicted.now == pytest.approx(5, abs=0.5)
    assert agreed.now == pytest.approx(10, abs=0.5)
    assert agreed.because.since_how == "told"
    assert agreed.because.since_on == date(2025, 12, 1)


def test_edge_no_odometer_at_any_visit() -> None:
    one = window(visit("2025-01-10", None, tread(8)), visit("2026-01-10", None, tread(6)))
    assert is_sound(one)
    assert one.because.distance_per_day == pytest.approx(28.7, rel=0.15)


def test_edge_odometer_decrease_is_left_out() -> None:
    wrong = window(*(visit(on, miles, tread(depth)) for on, miles, depth in (
        ("2024-06-10", 48_000, 9), ("2025-06-10", 85_900, 8), ("2026-01-10", 65_000, 7))))  # fmt: skip
    right = window(*(visit(on, miles, tread(depth)) for on, miles, depth in (
        ("2024-06-10", 48_000, 9), ("2025-06-10", 58_900, 8), ("2026-01-10", 65_000, 7))))  # fmt: skip
    assert is_sound(wrong)
    assert likely_days(wrong) == pytest.approx(likely_days(right), rel=0.15)


def test_edge_kilometers_typed_as_miles_are_put_right() -> None:
    first_used = float(date(2018, 1, 1).toordinal())
    entries = [(first_used + 365.0 * year, 11_000.0 * year) for year in (2, 3, 4, 5)]
    typed = [*entries[:3], (entries[3][0], entries[3][1] / MILES_PER_KM)]
    found = track(typed, first_used, UsagePrior())
    assert found.miles[-1] == pytest.approx(entries[3][1])


def test_edge_model_year_unknown_drops_the_first_interval() -> None:
    car = {"id": "V-1", "class": "car"}
    one = window(visit("2025-01-10", 50_000, tread(8), vehicle=car), visit("2026-01-10", 60_000, tread(6), vehicle=car))
    assert is_sound(one)
    assert one.because.distance_per_day == pytest.approx(10_000 / 365, rel=0.15)
    # Without a first use the miles since new are still those on the clock.
    assert one.because.since_how in ("unknown", "first_use")


def test_edge_two_visits_on_one_day() -> None:
    twice = window(visit("2026-01-10", 60_000, tread(7)), visit("2026-01-10", 60_020, tread(7), inspection="I-again"))
    assert is_sound(twice)
    assert twice.because.distance_per_day == pytest.approx(27.5, rel=0.15)


def test_edge_parked_car_gets_no_date() -> None:
    one = window(
        visit("2020-06-10", 900, tread(9)), *(visit(f"202{year}-06-10", 900 + year, tread(9)) for year in range(1, 7))
    )
    assert one.late is None
    assert is_sound(one)


def test_edge_mate_missing() -> None:
    both = windows(visit("2026-01-10", 60_000, tread(7), tread(7, "front_right")))
    alone = windows(visit("2026-01-10", 60_000, tread(7)))
    place = ("tire_tread", "front_left")
    assert set(both) == {place, ("tire_tread", "front_right")}
    width = {name: (one[place].late - one[place].early).days for name, one in (("both", both), ("alone", alone))}  # type: ignore[operator]  # both have dates
    assert width["both"] < width["alone"]


def test_edge_finer_gauge_is_trusted_more() -> None:
    coarse = window(visit("2026-01-10", 60_000, tread(6)))
    fine = window(visit("2026-01-10", 60_000, tread(6 * 25.4 / 32, unit="mm")))
    assert coarse.late is not None and coarse.early is not None and fine.late is not None and fine.early is not None
    assert fine.late - fine.early < coarse.late - coarse.early


def test_edge_sides_far_apart_are_doubted() -> None:
    near = windows(visit("2026-01-10", 60_000, tread(7), tread(7, "front_right")))
    apart = windows(visit("2026-01-10", 60_000, tread(7), tread(11, "front_right")))
    place = ("tire_tread", "front_left")
    assert (apart[place].late - apart[place].early) > (near[place].late - near[place].early)  # type: ignore[operator]  # both have dates


def test_edge_the_same_number_everywhere_is_trusted_less() -> None:
    corners = ("front_left", "front_right", "rear_left", "rear_right")
    place = ("tire_tread", "front_left")
    copied = windows(visit("2026-01-10", 60_000, *(tread(7, corner) for corner in corners)))[place]
    measured = windows(
        visit(
            "2026-01-10", 60_000, *(tread(depth, corner) for depth, corner in zip((7, 7, 7, 8), corners, strict=True))
        )
    )[place]
    assert copied.late is not None and copied.early is not None
    assert measured.late is not None and measured.early is not None
    assert copied.late - copied.early > measured.late - measured.early


def test_edge_as_of_later_than_the_last_visit_counts_from_as_of() -> None:
    visits = (visit("2026-01-10", 60_000, tread(7)),)
    then, later = window(*visits), window(*visits, as_of="2026-07-10")
    passed = (later.as_of - then.as_of).days
    # Conditioned on nothing: the same dates, seen from a later day.
    assert later.likely == then.likely
    assert later.chance_due_within(90) == pytest.approx(then.chance_due_within(90 + passed), abs=0.01)
    assert isinstance(later.now, float) and isinstance(then.now, float)
    assert later.now < then.now


def test_edge_as_of_long_after_is_clipped() -> None:
    one = window(visit("2016-01-10", 60_000, tread(7), vehicle={"id": "V-1"}), as_of="2026-01-10")
    assert one.early == one.likely == one.as_of
    assert one.curve.already > 0.9


def test_edge_nothing_later_than_as_of_is_looked_at() -> None:
    early = visit("2025-01-10", 50_000, tread(8))
    late = visit("2026-01-10", 60_000, tread(3))
    assert window(early, late, as_of="2025-01-10") == window(early, as_of="2025-01-10")


def test_edge_last_inspection_skipped_the_item() -> None:
    found = windows(
        visit("2025-01-10", 50_000, tread(8), pad(8)), visit("2026-01-10", 60_000, pad(7)), as_of="2026-01-10"
    )
    skipped = found["tire_tread", "front_left"]
    # 10,000 miles of usual wear have gone by since it was read.
    assert isinstance(skipped.now, float)
    assert skipped.now == pytest.approx(8 - 10 * 0.18, abs=0.7)


@pytest.mark.parametrize("kind", ["action", "legal"])
def test_edge_a_change_of_unit_flips_no_verdict(kind: str) -> None:
    limit = 4 if kind == "action" else 2
    for offset in (-0.4, -0.1, 0.0, 0.1, 0.4):
        in_32nds = window(visit("2026-01-10", 60_000, tread(limit + offset)), kind=kind)
        in_mm = window(visit("2026-01-10", 60_000, tread((limit + offset) * 25.4 / 32, unit="mm")), kind=kind)
        # 49 CFR 570.9(a): at least 2/32 in, so exactly 2/32 has not reached the legal limit; 4/32 is recommended at.
        assert in_32nds.is_past == in_mm.is_past == (offset < 0 or (offset == 0 and kind == "action"))


def test_edge_two_thirty_seconds_are_less_than_1_6_mm() -> None:
    # 2/32 in is 1.5875 mm: read as 1.6 mm (Great Britain's limit) it is above, as 1.58 below.
    assert not window(visit("2026-01-10", 60_000, tread(1.6, unit="mm")), kind="legal").is_past
    assert window(visit("2026-01-10", 60_000, tread(1.58, unit="mm")), kind="legal").is_past


def test_edge_rotors_and_pads_stay_apart_from_nan() -> None:
    found = windows(
        visit("2026-01-10", 60_000, {"item": "brake_rotor", "position": "front_left", "unit": "mm", "value": 24.1,
                                     "minimum": 22.4}, pad(7)))  # fmt: skip
    assert all(is_sound(one) for one in found.values())
    assert np.isfinite([chance for one in found.values() for _, chance in one.chances]).all()


def test_history_keeps_the_latest_version_of_an_inspection() -> None:
    first = visit("2026-01-10", 60_000, tread(7))
    corrected = visit("2026-01-10", 61_000, tread(5))
    found = history(first, corrected)
    assert [miles for _, miles in found.odometers] == [61_000]
    assert [one.entered.value for one in found.readings] == [5]
