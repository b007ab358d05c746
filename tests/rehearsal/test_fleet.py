"""The invented fleet: the same for the same seed, true to its habits, and written as the contract asks."""

from __future__ import annotations

import json
from dataclasses import replace
from datetime import date

import numpy as np
import pytest

from followup.core.forecast.due import forecast_cars
from followup.core.inspection import InspectionLine
from followup.rehearsal.fleet.build import Fleet, build_fleet
from followup.rehearsal.fleet.driving import weekly_miles
from followup.rehearsal.fleet.habits import AS_PUBLISHED, Driving, FleetHabits, Reading, Wearing
from followup.rehearsal.fleet.living import HORIZON_DAYS

# Nothing that the forecast does not know, and no noise: what is left must come out as computed by hand.
_STEADY = Driving(between_drivers=0.0, wander=0.0, jumps_a_year=0.0, summer_share=0.0, daily_variation=1e-3)
_EXACT = Reading(error=0.0, operator_bias=0.0, gauges=((0.001, 1.0),), missing_share=0.0, gross_share=0.0)


def _plain(limit: float) -> Wearing:
    return Wearing(
        limit=limit, new_spread=0.0, between_drivers=0.0, between_sets=0.0, between_sides=0.0,
        owners_change_at=(0.0, 1e-9),
    )  # fmt: skip


_PLAIN = FleetHabits(
    driving=_STEADY, tires=_plain(4.0), pads=_plain(3.0), tread_read=_EXACT, pads_read=_EXACT, winter_share=0.0,
    typing_error_share=0.0, kilometers_share=0.0, first_use_error_days=0.0,
)  # fmt: skip


@pytest.fixture(scope="module")
def fleet() -> Fleet:
    """Two hundred cars as published."""
    return build_fleet(AS_PUBLISHED, 200, 11)


def test_the_same_seed_gives_the_same_fleet(fleet: Fleet) -> None:
    assert build_fleet(AS_PUBLISHED, 200, 11) == fleet
    assert build_fleet(AS_PUBLISHED, 200, 12).lines != fleet.lines


def test_every_line_is_taken_as_it_comes_in(fleet: Fleet) -> None:
    histories = fleet.histories()
    assert len(histories) == 200
    assert sum(len(one.odometers) for one in histories) == len(fleet.lines)
    assert InspectionLine.model_validate_json(json.dumps(fleet.lines[0])).vehicle.id == "V-1"


def test_truth_is_known_of_what_was_read_above_the_limit_at_the_last_visit(fleet: Fleet) -> None:
    last = {line["vehicle"]["id"]: line for line in fleet.lines}
    for (car, item, place), days in fleet.due_days.items():
        read = next(one for one in last[car]["readings"] if (one["item"], one["position"]) == (item, place))
        in_own_unit = read["value"] if item == "brake_pad" or read["unit"] == "32nds" else read["value"] * 32 / 25.4
        assert in_own_unit > (3.0 if item == "brake_pad" else 4.0) - 0.07
        assert 0 <= days <= HORIZON_DAYS


def test_plain_wear_is_due_when_a_hand_would_reckon_it() -> None:
    """Depth over rate over miles a day; the age is kept under five years, when people drive the same each year."""
    fleet = build_fleet(replace(_PLAIN, driving=replace(_STEADY, decline_a_year=0.0)), 60, 3)
    rates = {"front": (0.21, 0.13), "all": (0.18, 0.165), "rear": (0.17, 0.185)}
    last = {line["vehicle"]["id"]: line for line in fleet.lines}
    checked = 0
    for (car, item, place), days in fleet.due_days.items():
        read = next(one for one in last[car]["readings"] if (one["item"], one["position"]) == (item, place))
        if item != "tire_tread" or days >= HORIZON_DAYS:
            continue
        rate = rates[last[car]["vehicle"]["driven"]][place.startswith("rear")]
        left = read["value"] / 25.4 * 32 - 4.0
        assert days == pytest.approx(left / rate * 1000 / (10_500 / 365.25), abs=25)
        checked += 1
    assert checked > 50


def test_people_drive_as_far_as_they_are_said_to() -> None:
    """The median year of new cars is 10,500 miles; the log of a year's miles spreads as its parts add up.

    Variance of the mean of an Ornstein-Uhlenbeck process over a time T: 2 s^2 (k - 1 + exp(-k)) / k^2, k = T / theta
    (Gillespie 1996), beside the spread between drivers.
    """
    driving = replace(Driving(), jumps_a_year=0.0)
    born = np.full(4000, 737_000.0)
    year = weekly_miles(driving, born, 104, np.random.default_rng(5))[:52].sum(axis=0)
    assert np.exp(np.median(np.log(year))) == pytest.approx(10_500, rel=0.05)
    times = 364 / driving.wander_days
    wander = driving.wander**2 * 2 * (times - 1 + np.exp(-times)) / times**2
    assert np.log(year).std() == pytest.approx(np.sqrt(driving.between_drivers**2 + wander), rel=0.05)


def test_work_that_was_written_down_reaches_the_forecast(fleet: Fleet) -> None:
    told = [one for one in fleet.pairs if one.did == "replaced" and one.is_told]
    assert told
    histories = {one.vehicle.code: one for one in fleet.histories()}
    for pair in told:
        work = [one for one in histories[pair.car].work if one.item == pair.item]
        assert any(pair.before <= one.on <= pair.after for one in work)


def test_cars_can_be_forecast(fleet: Fleet) -> None:
    windows = forecast_cars(fleet.histories(), "last")
    known = {(one.vehicle, one.item, one.position) for one in windows}
    assert set(fleet.due_days) <= known
    assert all(isinstance(one.as_of, date) for one in windows)
