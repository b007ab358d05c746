"""Advisories of a car: no finding without a mate, gone when the work is done or the next reading shows it no more.

What may be compared, and what work ends, is common practice of the trade.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest

from followup.core.advisories import words
from followup.core.forecast.history import Reading
from followup.core.inspection import Reading as Entered
from followup.core.vehicle import CORNERS
from followup.core.visit import Work
from followup.core.wording_checks.never import NEVER
from tests.core.advisories.cars import ALL_WHEEL, CAR, READ_ON, TODAY, found, keys, pad, tread

LATER = READ_ON + timedelta(days=10)
UNEVEN = tread("front_left", 7, 7, 3)
AXLES_APART = [tread(place, 4 if place.startswith("front") else 8) for place in CORNERS]


def _work(item: str, did: str, position: str = "", on: date = LATER, **more: object) -> tuple[Work, ...]:
    return (Work(item, position, did, on, **more),)


@pytest.mark.parametrize("car", [CAR, ALL_WHEEL])
@pytest.mark.parametrize("place", CORNERS)
def test_no_advisory_from_a_single_missing_mate(place: str, car: object) -> None:
    assert keys(tread(place, 2), car=car) == []
    assert keys(pad(place, value=2)) == keys(pad(place, inner=2)) == []
    not_checked = Reading(Entered(item="brake_pad", position="front_right", not_checked="drum"), READ_ON)
    assert keys(pad("front_left", value=2), not_checked) == []
    # Three of four tell nothing of the axles' means.
    assert "tire_rotation" not in keys(*[one for one in AXLES_APART if one.position != place])


def test_readings_of_different_days_are_not_compared() -> None:
    left = tread("front_left", 8, on=READ_ON - timedelta(days=100))
    assert keys(left, tread("front_right", 3)) == []
    near = replace(left, on=READ_ON - timedelta(days=7))
    assert keys(near, tread("front_right", 3)) == ["tire_axle front"]


def test_a_reading_of_a_year_ago_says_nothing_any_more() -> None:
    assert keys(UNEVEN, on=READ_ON + timedelta(days=365))
    assert keys(UNEVEN, on=READ_ON + timedelta(days=366)) == []
    # Nothing is known before it was read.
    assert keys(UNEVEN, on=READ_ON - timedelta(days=1)) == []


def test_the_next_reading_ends_it() -> None:
    assert keys(UNEVEN, tread("front_left", 6, 6, 5, on=LATER)) == []
    assert keys(tread("front_left", 6, 6, 5, on=LATER), UNEVEN) == []
    # A place that could not be looked at shows nothing new.
    skipped = Reading(Entered(item="tire_tread", position="front_left", not_checked="no_time"), LATER)
    assert keys(UNEVEN, skipped) == ["tire_across front_left"]


@pytest.mark.parametrize(
    ("work", "is_over"),
    [
        (_work("tire_tread", "replaced", "front_left"), True),
        (_work("tire_tread", "replaced", "front"), True),
        (_work("tire_tread", "replaced"), True),
        (_work("tire_tread", "replaced", "rear"), False),
        (_work("alignment", "adjusted"), True),
        (_work("alignment", "adjusted", on=READ_ON), True),  # it was read first, then done
        (_work("alignment", "adjusted", on=READ_ON - timedelta(days=1)), False),
        (_work("alignment", "adjusted", on=TODAY + timedelta(days=1)), False),
        (_work("brake_pad", "replaced", "front"), False),
    ],
)
def test_work_ends_uneven_tires(work: tuple[Work, ...], is_over: bool) -> None:
    assert (keys(UNEVEN, work=work) == []) is is_over


@pytest.mark.parametrize("did", ["replaced", "repaired", "adjusted", "serviced"])
def test_work_ends_uneven_pads(did: str) -> None:
    pads = (pad("front_left", inner=3, outer=8), pad("front_right", inner=8, outer=8))
    assert keys(*pads) == ["pad_inner_outer front_left", "pad_sides front"]
    assert keys(*pads, work=_work("brake_pad", did, "front")) == []
    assert keys(*pads, work=_work("brake_pad", did, "front_left")) == []
    assert keys(*pads, work=_work("brake_pad", did, "rear")) == ["pad_inner_outer front_left", "pad_sides front"]
    assert keys(*pads, work=_work("brake_rotor", did, "front")) == ["pad_inner_outer front_left", "pad_sides front"]


def test_a_rotation_takes_the_tires_along() -> None:
    """Worn to one side stays so, wherever the tire went; the axles have been seen to."""
    moves = (("front_left", "rear_right"), ("rear_right", "front_left"), ("front_right", "rear_left"),
             ("rear_left", "front_right"))  # fmt: skip
    readings = [UNEVEN, *AXLES_APART[1:]]
    assert keys(*readings) == ["tire_across front_left", "tire_rotation"]
    after = found(*readings, work=_work("tire_tread", "rotated", moved=moves))
    assert [one.key for one in after] == ["tire_across rear_right"]
    assert "at left front" in words.measured(after[0], TODAY)
    # Where nobody told how, only what needs no place is left.
    (untold,) = found(*readings, work=_work("tire_rotation", "serviced"))
    assert (untold.code, untold.position, words.title(untold)) == ("tire_across", "", "One tire")
    every = found(*readings, car=ALL_WHEEL, work=_work("tire_tread", "rotated"))
    assert [one.code for one in every] == ["tire_four", "tire_across"]


def test_a_pair_is_that_of_the_places_where_the_tires_are_now() -> None:
    moves = (("front_left", "front_right"), ("front_right", "front_left"))
    readings = [tread("front_left", 8), tread("front_right", 4)]
    (one,) = found(*readings, work=_work("tire_tread", "rotated", moved=moves))
    assert one.key == "tire_axle front"
    assert words.measured(one, TODAY) == (
        "left front 4/32, right front 8/32 on March 2: 4/32 apart; read before a rotation."
    )


def test_two_tires_told_to_one_place_are_nowhere_in_particular() -> None:
    lost = _work("tire_tread", "rotated", moved=(("front_left", "rear_left"),))
    (one,) = found(UNEVEN, *AXLES_APART[1:], work=lost)
    assert (one.code, one.position) == ("tire_across", "")


def test_a_rotation_is_not_advised_soon_after_one() -> None:
    """The rear stood in front before: they even out by themselves until the next rotation is due (6,250 miles)."""
    read = [replace(one, odometer_miles=40_000.0) for one in AXLES_APART]

    def since(miles: float | None, days: int, **more: object) -> list[str]:
        at = None if miles is None else 40_000.0 - miles
        done = _work("tire_rotation", "serviced", on=READ_ON - timedelta(days=days), odometer_miles=at, **more)
        return keys(*read, work=done)

    assert since(2_000, 60) == []
    assert since(6_250, 200) == ["tire_rotation"]
    assert since(None, 100) == []
    assert since(None, 182) == ["tire_rotation"]
    # Left against right is no rotation between the axles.
    sides = (("front_left", "front_right"), ("front_right", "front_left"))
    assert since(2_000, 60, moved=sides) == ["tire_rotation"]


@pytest.mark.parametrize(
    ("car", "is_possible"),
    [
        ({}, True),
        ({"directional": True}, True),
        ({"directional": None, "tire_size_front": None}, True),
        ({"tire_size_rear": "265/45R18"}, False),
        ({"tire_size_rear": "265/45R18", "directional": True}, False),
        ({"run_flat": True}, True),
    ],
)
def test_a_rotation_is_advised_only_where_tires_may_change_the_axle(car: dict[str, object], is_possible: bool) -> None:
    own = replace(CAR, **car)
    assert ("tire_rotation" in keys(*AXLES_APART, car=own)) is is_possible


def test_the_spare_takes_part_in_nothing() -> None:
    spare = Reading(Entered(item="tire_age", position="spare", date_code="0821"), READ_ON)
    assert keys(*AXLES_APART, spare) == ["tire_rotation"]


def test_only_the_set_of_tires_that_is_on_the_car_counts() -> None:
    winter = tread("front_left", 7, 7, 3, tire_set="winter", on=READ_ON - timedelta(days=90))
    summer = tread("front_left", 7, 7, 7, tire_set="summer")
    assert keys(winter) == ["tire_across front_left"]
    assert keys(winter, summer) == []
    # The set was changed since; the new one was not measured yet.
    changed = Reading(Entered(item="washer_fluid", level="ok"), READ_ON, tire_set="summer")
    assert keys(winter, changed) == []


def test_what_staff_read() -> None:
    (one,) = found(UNEVEN)
    assert words.title(one) == "Left front tire"
    assert words.measured(one, TODAY) == (
        "7/32, 7/32 and 3/32 (outer, center, inner) on March 2: 4/32 apart, lower at the inner edge."
    )
    assert words.asks_for(one, CAR) == "More than 2/32 across one tire: alignment and pressure check."
    assert words.certainty(one) == "Truly so 19 times in 20."
    (pads,) = found(pad("rear_right", inner=7.5, outer=4))
    assert words.title(pads) == "Right rear brake pads"
    assert words.measured(pads, TODAY) == "inner 7.5 mm, outer 4 mm on March 2: 3.5 mm apart."
    assert words.asks_for(pads, CAR) == "More than 2 mm between inner and outer pad: slides and caliper looked at."
    (due,) = found(*AXLES_APART)
    assert words.measured(due, TODAY) == (
        "left front 4/32, left rear 8/32, right rear 8/32, right front 4/32 on March 2: "
        "front and rear 4/32 apart on average."
    )
    assert words.asks_for(due, CAR).startswith("2/32 or more between front and rear: rotation (front straight back")
    four = found(*AXLES_APART, car=ALL_WHEEL)[0]
    assert words.asks_for(four, ALL_WHEEL).endswith("the four belong together, measure them against the handbook.")


def test_the_words_name_no_cause_and_frighten_nobody() -> None:
    """Plain words that never diagnose: none of what no text says, and none of what is only guessed from wear."""
    readings = [UNEVEN, *AXLES_APART[1:], pad("front_left", inner=3, outer=8), pad("front_right", value=8)]
    causes = ("toe", "camber", "inflat", "seized", "stuck", "bent", "caused", "because of", "worn out", "fault")
    said_of = set()
    for car in (CAR, ALL_WHEEL):
        for advisory in found(*readings, car=car):
            said = " ".join(
                (words.title(advisory), words.measured(advisory, TODAY), words.asks_for(advisory, car),
                 words.certainty(advisory))
            )  # fmt: skip
            said_of.add(advisory.code)
            assert not [cause for cause in causes if cause in said.lower()], said
            assert not [one.rule for one in NEVER if one.rule != "plate or VIN" and one.en.search(said)], said
    assert said_of == {"pad_inner_outer", "pad_sides", "tire_four", "tire_across", "tire_rotation"}


def test_brakes_come_first() -> None:
    readings = [UNEVEN, *AXLES_APART[1:], pad("front_left", inner=3, outer=8)]
    assert found(*readings, car=ALL_WHEEL)[0].code == "pad_inner_outer"
