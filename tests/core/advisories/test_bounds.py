"""Each rule at, just under and just over its bound, in 32nds and in mm; the published bounds with their sources.

Practice of the trade (a fact of the trade, no single source): more than 2/32 in across one tire, or between the tires
of one axle, asks for an alignment and pressure check; all four of an all-wheel drive within 2/32 to 3/32 (its middle is
the default); a rotation at 2/32 between the axles; pads more than 2 mm apart, inner to outer or left to right.
"""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from followup.core.advisories import BOUND_BY_CODE
from followup.core.item import MM_PER_32ND
from followup.core.items import BY_CODE, measured
from followup.core.vehicle import CORNERS
from tests.core.advisories.cars import ALL_WHEEL, CAR, found, in_mm, keys, pad, tread

both_units = pytest.mark.parametrize("unit", ["32nds", "mm"])


def test_the_usual_bounds_are_the_published_ones() -> None:
    assert {code: (one.value, one.unit, one.is_over) for code, one in BOUND_BY_CODE.items()} == {
        "pad_inner_outer": (2.0, "mm", True),
        "pad_sides": (2.0, "mm", True),
        "tire_four": (2.5, "32nds", True),
        "tire_across": (2.0, "32nds", True),
        "tire_axle": (2.0, "32nds", True),
        "tire_rotation": (2.0, "32nds", False),
    }


def _depths(unit: str, *depths: float) -> tuple[float, ...]:
    return depths if unit == "32nds" else tuple(in_mm(one) for one in depths)


@both_units
@pytest.mark.parametrize(("lowest", "is_found"), [(5, False), (4, False), (3, True), (2, True)])
def test_across_one_tire(unit: str, lowest: float, is_found: bool) -> None:
    """One mark is nothing, two marks are the bound itself ("more than"), three are over it."""
    readings = tread("front_left", *_depths(unit, 6, 6, lowest), unit=unit)
    assert keys(readings) == (["tire_across front_left"] if is_found else [])


@both_units
@pytest.mark.parametrize(("right", "is_found"), [(6, False), (5, False), (4, True)])
def test_between_the_tires_of_one_axle(unit: str, right: float, is_found: bool) -> None:
    left, low = _depths(unit, 7, right)
    assert keys(tread("rear_left", left, unit=unit), tread("rear_right", low, unit=unit)) == (
        ["tire_axle rear"] if is_found else []
    )


@pytest.mark.parametrize(
    ("difference_mm", "is_found"),
    # 2/32 in is 1.5875 mm. With a sd of .619 mm of the difference (.55/32 in by hand, .1 mm gauge, twice) 7 in 10 are
    # reached .3246 mm beyond it: at 1.9121 mm.
    [(1.5, False), (1.5875, False), (1.9, False), (1.92, True), (2.0, True)],
)
def test_across_one_tire_with_a_gauge_of_tenths(difference_mm: float, is_found: bool) -> None:
    grooves = (6.0, 6.0, round(6.0 - difference_mm, 4))
    assert bool(keys(tread("front_left", *grooves, unit="mm"))) is is_found


@both_units
@pytest.mark.parametrize(("lowest", "is_found"), [(7, False), (6, False), (5, True)])
def test_the_four_of_an_all_wheel_drive(unit: str, lowest: float, is_found: bool) -> None:
    """2/32 is within "2/32 to 3/32", 3/32 is where the range ends."""
    depths = dict(zip(CORNERS, _depths(unit, 8, 8, 8, lowest), strict=True))
    readings = [tread(place, depth, unit=unit) for place, depth in depths.items()]
    assert ("tire_four" in keys(*readings, car=ALL_WHEEL)) is is_found
    assert "tire_four" not in keys(*readings, car=CAR)
    staggered = replace(ALL_WHEEL, tire_size_rear="265/45R18")
    assert "tire_four" not in keys(*readings, car=staggered)


@both_units
@pytest.mark.parametrize(("front", "is_found"), [((7, 7), False), ((7, 6), False), ((6, 6), True), ((6, 5), True)])
def test_a_rotation_at_the_bound_itself(unit: str, front: tuple[float, float], is_found: bool) -> None:
    """Recommended at 2/32 between the axles, not over it; the mean of both sides counts."""
    left, right, rear = _depths(unit, *front, 8)
    readings = [
        tread("front_left", left, unit=unit), tread("front_right", right, unit=unit),
        tread("rear_left", rear, unit=unit), tread("rear_right", rear, unit=unit),
    ]  # fmt: skip
    assert keys(*readings) == (["tire_rotation"] if is_found else [])


@pytest.mark.parametrize(
    ("outer", "is_found"),
    # A sd of .736 mm of the difference (.5 mm by hand, .5 mm gauge, twice): 7 in 10 at .386 mm beyond 2 mm.
    [(5.0, False), (5.5, False), (6.0, False), (6.5, True), (7.0, True)],
)
def test_inner_against_outer_pad(outer: float, is_found: bool) -> None:
    assert bool(keys(pad("front_left", inner=4.0, outer=outer))) is is_found
    assert bool(keys(pad("front_left", inner=outer, outer=4.0))) is is_found


@pytest.mark.parametrize(("right", "is_found"), [(6.0, False), (6.5, True)])
def test_left_against_right_pad_by_the_lowest_of_each(right: float, is_found: bool) -> None:
    readings = (pad("rear_left", inner=4.0, outer=4.5), pad("rear_right", value=right))
    assert keys(*readings) == (["pad_sides rear"] if is_found else [])


@pytest.mark.parametrize(("marks", "is_found"), [(2, False), (3, False), (4, True)])
def test_pads_in_32nds_are_held_against_2_mm(marks: int, is_found: bool) -> None:
    """3/32 in is 2.38 mm: over the bound, but with whole marks not surely enough (sd .866 mm: 67 in 100)."""
    assert bool(keys(pad("front_left", unit="32nds", inner=5, outer=5 + marks))) is is_found


@given(st.lists(st.integers(2, 12), min_size=4, max_size=4), st.integers(0, 4))
def test_a_change_of_unit_flips_no_verdict(depths: list[int], low_groove: int) -> None:
    """The same marks entered as 32nds, as exact mm, or one side in each, give the same advisories.

    The gauge of the marks is finer in mm by .1 against 1/32 in; at whole marks that decides nothing.
    """

    def read(units: tuple[str, ...]) -> list[str]:
        readings = [
            tread(place, *(depth if unit == "32nds" else in_mm(depth) for depth in (own, own, own - low)), unit=unit)
            for place, own, unit, low in zip(CORNERS, depths, units, (min(low_groove, depths[0]), 0, 0, 0), strict=True)
        ]
        return keys(*readings, car=ALL_WHEEL)

    assert read(("32nds",) * 4) == read(("mm",) * 4) == read(("32nds", "mm", "mm", "32nds"))


def test_the_bound_is_turned_never_the_reading() -> None:
    """2/32 in is 1.5875 mm (arithmetic): what was entered stands in the advisory as it was entered."""
    (one,) = found(tread("front_left", 6.4, 6.2, 3.9, unit="mm"))
    assert (one.highest, one.lowest, one.unit) == (6.4, 3.9, "mm")
    assert one.bound == pytest.approx(1.5875)
    assert one.bound == 2 * MM_PER_32ND


def test_the_lowest_of_several_readings_counts() -> None:
    """Maryland COMAR 11.22.04.06 (read): the lowest reading of a tire counts, not the mean."""
    reading = tread("front_left", 6, 6, 3).entered
    number = measured(BY_CODE["tire_tread"], reading)
    assert number is not None
    assert number.value == 3
    # So by the lowest these two tires are 4/32 apart, by the mean 2/32.
    assert "tire_axle front" in keys(tread("front_left", 6, 6, 3), tread("front_right", 7, 7, 7))


def test_the_shop_moves_a_bound_and_the_chance() -> None:
    tire = tread("front_left", 6, 6, 4)
    assert keys(tire) == []
    assert keys(tire, advisory_bounds={"tire_across": 1.0}) == ["tire_across front_left"]
    worse = tread("front_left", 6, 6, 3)
    assert keys(worse) == ["tire_across front_left"]
    assert keys(worse, advise_at_chance=0.9) == []
    assert keys(worse, advisory_bounds={"tire_across": 3.0}) == []
    # At even odds "more than" still means more than.
    assert keys(tire, advise_at_chance=0.5) == []


def test_a_guess_needs_a_wider_difference() -> None:
    """A wheel left on doubles the variance, a guess makes it four times (the forecast's own assumption)."""
    assert keys(pad("front_left", inner=4, outer=6.5, how="wheel_off"))
    assert keys(pad("front_left", inner=4, outer=6.5, how="wheel_on")) == []
    assert keys(pad("front_left", inner=4, outer=7, how="wheel_on"))
    assert keys(pad("front_left", inner=4, outer=6.5, how="estimate")) == []
