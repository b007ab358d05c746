"""How windows come out by the next reading: which reading counts, what ends a window, what is found due."""

from __future__ import annotations

from typing import Any

import pytest

from followup.core.forecast.due import forecast_cars
from followup.core.forecast.forecast_score import ForecastScore
from followup.core.forecast.scored import score_windows
from tests.core.forecast.told import history, pad, tread, visit

FIRST = visit("2024-03-01", 30_000, pad(9.0), pad(9.0, "front_right"))
TIRES = ("front_left", "front_right", "rear_left", "rear_right")


def scored(first: dict[str, Any], *later: dict[str, Any]) -> dict[tuple[str, str], ForecastScore]:
    """The scores of the windows that were made after the first visit, by what came later."""
    known = history(first, *later)
    made = forecast_cars([known.until(history(first).readings[0].on)], "last", with_ahead=True)
    found = score_windows(made, known, {})
    return {(one.item, one.position): score for one, score in zip(made, found, strict=True) if score is not None}


def test_nothing_came_yet() -> None:
    assert scored(FIRST) == {}


def test_the_next_reading_counts_and_no_later_one() -> None:
    later = visit("2024-12-01", 40_000, pad(7.0)), visit("2025-12-01", 52_000, pad(1.0))
    found = scored(FIRST, *later)
    one = found[("brake_pad", "front_left")]
    assert (one.how, one.scored_on.isoformat(), one.found, one.was_due) == ("measured", "2024-12-01", 7.0, False)
    assert one.place is not None and one.place_at_odometer is not None and one.expected is not None
    assert 0.1 < one.place < 0.9 and 6 < one.expected < 8.5
    # The other side was not looked at again.
    assert ("brake_pad", "front_right") not in found


def test_more_worn_than_expected_lies_low_and_scores_worse() -> None:
    at_12_mm_less, as_expected = (
        scored(FIRST, visit("2024-12-01", 40_000, pad(value)))[("brake_pad", "front_left")] for value in (4.0, 7.0)
    )
    assert at_12_mm_less.place is not None and at_12_mm_less.place < 0.02
    assert at_12_mm_less.crps is not None and as_expected.crps is not None
    assert at_12_mm_less.crps > 2 * as_expected.crps


def test_a_place_that_was_not_checked_waits_for_the_next_look() -> None:
    skipped = {"item": "brake_pad", "position": "front_left", "not_checked": "no_time"}
    found = scored(FIRST, visit("2024-12-01", 40_000, skipped), visit("2025-06-01", 46_000, pad(6.0)))
    assert found[("brake_pad", "front_left")].scored_on.isoformat() == "2025-06-01"


def test_a_part_that_was_changed_unmeasured_is_not_scored() -> None:
    work = [{"item": "brake_pad", "position": "front", "did": "replaced", "on": "2024-09-01"}]
    one = scored(FIRST, visit("2024-12-01", 40_000, pad(10.5), work_done=work))[("brake_pad", "front_left")]
    assert (one.how, one.scored_on.isoformat(), one.place, one.chance) == ("changed", "2024-09-01", None, None)


def test_a_reading_on_the_day_of_the_work_was_taken_before_it() -> None:
    work = [{"item": "brake_pad", "position": "front", "did": "replaced"}]
    one = scored(FIRST, visit("2025-12-01", 52_000, pad(3.0), work_done=work))[("brake_pad", "front_left")]
    assert (one.how, one.was_due) == ("measured", True)


def test_work_on_the_other_axle_ends_nothing() -> None:
    work = [{"item": "brake_pad", "position": "rear", "did": "replaced", "on": "2024-09-01"}]
    one = scored(FIRST, visit("2024-12-01", 40_000, pad(7.0), work_done=work))[("brake_pad", "front_left")]
    assert one.how == "measured"


def test_rotated_tires_are_not_scored_and_pads_are() -> None:
    first = visit("2024-03-01", 30_000, pad(9.0), *(tread(9, one) for one in TIRES))
    work = [{"item": "tire_tread", "did": "rotated", "on": "2024-09-01"}]
    found = scored(first, visit("2024-12-01", 40_000, pad(7.0), *(tread(7, one) for one in TIRES), work_done=work))
    assert found[("tire_tread", "front_left")].how == "moved"
    assert found[("brake_pad", "front_left")].how == "measured"


def test_numbers_that_only_a_new_part_explains_are_kept_apart() -> None:
    first = visit("2024-03-01", 60_000, pad(4.0), pad(4.0, "front_right"))
    found = scored(first, visit("2024-12-01", 70_000, pad(10.5), pad(10.5, "front_right")))
    assert {one.how for one in found.values()} == {"seems_changed"}
    # Its place is kept, so that it can be counted as a miss.
    assert all(one.place is not None and one.place > 0.99 for one in found.values())


def test_numbers_that_only_a_rotation_explains_are_kept_apart() -> None:
    first = visit("2024-03-01", 50_000, *(tread(4 if "front" in one else 9, one) for one in TIRES))
    found = scored(first, visit("2024-12-01", 58_000, *(tread(8 if "front" in one else 3, one) for one in TIRES)))
    assert {one.how for one in found.values()} == {"seems_moved"}


def test_labeled_sets_of_tires_are_not_mixed_up() -> None:
    first = visit("2024-10-15", 50_000, *(tread(7, one) for one in TIRES), tire_set="summer")
    found = scored(first, visit("2024-12-15", 52_000, *(tread(9, one) for one in TIRES), tire_set="winter"))
    assert {one.how for one in found.values()} == {"other_set"}


def test_what_was_found_due_already_is_no_forecast() -> None:
    first = visit("2024-03-01", 60_000, pad(3.0), {"item": "wiper_blade", "position": "front", "looks": "streaks"})
    again = {"item": "wiper_blade", "position": "front", "looks": "streaks"}
    found = scored(first, visit("2024-06-01", 63_000, pad(2.5), again))
    one = found[("brake_pad", "front_left")]
    assert one.chance is None and one.was_due is None and one.place is not None
    assert ("wiper_blade", "front") not in found


def test_a_battery_is_found_due_or_not() -> None:
    first = visit("2024-03-01", 30_000, {"item": "battery", "verdict": "good"})
    for verdict, is_due in (("good", False), ("replace", True)):
        one = scored(first, visit("2025-03-01", 41_000, {"item": "battery", "verdict": verdict}))[("battery", "")]
        assert (one.how, one.was_due, one.place) == ("looked_at", is_due, None)
        assert one.chance is not None and 0 < one.chance < 1


def test_a_chance_allows_for_the_error_of_the_reading() -> None:
    """Read 5/32 by a gauge of whole 32nds: that the next reading shows 4 is likelier than that the tread is at 4."""
    first = visit("2024-03-01", 30_000, *(tread(5, one) for one in TIRES))
    known = history(first)
    window = next(one for one in forecast_cars([known], "last", with_ahead=True) if one.position == "front_left")
    one = scored(first, visit("2024-03-20", 30_100, *(tread(4, one) for one in TIRES)))[("tire_tread", "front_left")]
    assert one.chance is not None and one.was_due
    assert one.chance > window.chance_due_within(19) + 0.05


@pytest.mark.parametrize("item", ["tire_age", "registration_sticker"])
def test_dates_that_stand_on_a_sticker_are_no_forecast(item: str) -> None:
    reading = {"item": item, "date_code": "0421", "position": "front_left"}
    if item == "registration_sticker":
        reading = {"item": item, "good_until": "2024-10"}
    assert scored(visit("2024-03-01", 30_000, reading), visit("2025-03-01", 40_000, reading)) == {}
