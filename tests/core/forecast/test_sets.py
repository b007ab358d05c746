"""Which readings belong together: told and untold replacements, rotations, another set of tires."""

from datetime import date

import numpy as np
import pytest

from followup.core.forecast.due import forecast_cars
from followup.core.forecast.history import CarHistory
from followup.core.forecast.window import DueWindow
from tests.core.forecast.told import history, pad, tread, visit, window, windows

CORNERS = ("front_left", "front_right", "rear_left", "rear_right")


def four(front: float, rear: float) -> tuple[dict[str, object], ...]:
    """Treads of four tires."""
    return tuple(tread(front if corner.startswith("front") else rear, corner) for corner in CORNERS)


def front_left(*visits: dict[str, object]) -> DueWindow:
    """The window of the left front tire."""
    return windows(*visits)["tire_tread", "front_left"]


def test_told_replacement_starts_anew() -> None:
    done = {"item": "tire_tread", "position": "front", "did": "replaced"}
    one = front_left(visit("2026-01-10", 60_000, *four(3, 7), work_done=[done]))
    assert one.now == pytest.approx(10.3, abs=0.2)
    assert (one.because.since_how, one.because.since_on) == ("told", date(2026, 1, 10))
    assert one.because.readings_used == 0
    assert not one.is_past
    rear = windows(visit("2026-01-10", 60_000, *four(3, 7), work_done=[done]))["tire_tread", "rear_left"]
    assert rear.now == pytest.approx(7, abs=0.6)


def test_untold_replacement_is_seen_from_a_tread_that_grew() -> None:
    one = front_left(visit("2025-01-10", 50_000, *four(4.5, 6)), visit("2026-01-10", 60_000, *four(10, 5)))
    assert one.because.since_how == "seen"
    assert one.because.since_on == date(2026, 1, 10)
    assert one.because.readings_used == 1
    assert one.now == pytest.approx(10, abs=0.6)


def test_wearing_on_is_not_seen_as_new() -> None:
    one = front_left(visit("2025-01-10", 50_000, *four(8, 8)), visit("2026-01-10", 60_000, *four(6, 7)))
    assert one.because.since_how in ("unknown", "first_use")
    assert one.because.readings_used == 2


def test_told_rotation_takes_the_other_axles_reading_along() -> None:
    done = {"item": "tire_rotation", "did": "rotated"}
    found = windows(visit("2026-01-10", 60_000, *four(6, 9), work_done=[done]))
    assert found["tire_tread", "front_left"].now == pytest.approx(9, abs=0.6)
    assert found["tire_tread", "rear_left"].now == pytest.approx(6, abs=0.6)
    assert found["tire_tread", "front_left"].because.since_how == "told"


def test_rotation_side_to_side_changes_nothing_for_the_pair() -> None:
    moved = {"front_left": "front_right", "front_right": "front_left"}
    done = {"item": "tire_tread", "did": "rotated", "moved": moved}
    plain = front_left(visit("2026-01-10", 60_000, *four(6, 9)))
    crossed = front_left(visit("2026-01-10", 60_000, *four(6, 9), work_done=[done]))
    assert crossed.likely == plain.likely


def test_another_labelled_set_starts_anew() -> None:
    one = front_left(
        visit("2025-10-10", 50_000, *four(9, 9), tire_set="summer"),
        visit("2025-12-10", 52_000, *four(8, 8), tire_set="winter"),
    )
    assert one.because.readings_used == 1
    # Winter tires are recommended at 6/32.
    assert one.limit is not None and one.limit.value == 6


def test_a_set_that_comes_back_goes_on_wearing_where_it_stopped() -> None:
    """Two winters of 4,000 miles each with 15,000 of summer in between: 2/32 in 4,000 miles, not in 19,000."""
    visits = [
        visit("2024-04-10", 30_000, *four(10, 10), tire_set="summer"),
        visit("2024-11-10", 40_000, *four(11, 11), tire_set="winter"),
        visit("2025-04-10", 44_000, *four(8, 8), tire_set="summer"),
        visit("2025-11-10", 59_000, *four(9, 9), tire_set="winter"),
        visit("2026-03-10", 63_000, *four(7, 7), tire_set="winter"),
    ]
    one = front_left(*visits)
    assert one.because.readings_used == 3
    # Least squares through (0, 11), (4, 9), (8, 7) thousand miles is .5 a thousand; the prior's .21 draws it down.
    assert one.because.wear_per_1000 is not None
    assert 0.33 < one.because.wear_per_1000 < 0.5
    summer = front_left(*visits[:3])
    assert summer.because.readings_used == 2
    assert summer.now == pytest.approx(8, abs=0.6)


def test_untold_replacements_are_found_and_few_are_imagined() -> None:
    """On 400 pairs of readings drawn from what is usual (seeded): the bars for a fleet are .90 of the replacements of
    tires found, .95 of pads, at most 4 and 1.5 % imagined; here with room for the smaller number."""
    random = np.random.default_rng(20)
    found = {("tire_tread", True): 0, ("tire_tread", False): 0, ("brake_pad", True): 0, ("brake_pad", False): 0}
    for item, new, usual, error, last in (("tire_tread", 10.3, 0.21, 0.5, 3.0), ("brake_pad", 11.0, 0.165, 0.45, 2.5)):
        for is_new in (True, False):
            cars = [_pair(random, item, new, usual, error, last, is_new) for _ in range(200)]
            told = forecast_cars(cars, "last")
            found[item, is_new] = sum(one.because.since_how == "seen" for one in told if one.position == "front_left")
    assert found["tire_tread", True] >= 0.87 * 200
    assert found["brake_pad", True] >= 0.92 * 200
    assert found["tire_tread", False] <= 0.05 * 200
    assert found["brake_pad", False] <= 0.03 * 200


def _pair(
    random: np.random.Generator, item: str, new: float, usual: float, error: float, last: float, is_new: bool
) -> CarHistory:
    """Two visits 6,000 miles apart; in between the set was replaced at about `last`, or wore on."""
    rate = usual * np.exp(random.normal(0, 0.35))
    before = random.uniform(last, last + 2.5) if is_new else random.uniform(5, new)
    after = new - rate * random.uniform(0, 6) if is_new else before - rate * 6
    read = tread if item == "tire_tread" else pad
    visits = []
    for on, miles, depth in (("2025-01-10", 50_000, before), ("2026-01-10", 56_000, after)):
        sides = [round(max(depth + random.normal(0, error), 0)) for _ in range(2)]
        visits.append(visit(on, miles, read(sides[0], "front_left"), read(sides[1], "front_right")))
    return history(*visits)


def test_new_parts_are_seen_though_another_side_was_read() -> None:
    """One side left out before, the other now: the sides of an axle are replaced together (common practice)."""
    visits = (
        visit("2025-10-19", 45_879, pad(3, "rear_right")),
        visit("2026-02-22", 49_926, pad(8.5, "rear_left")),
    )
    assert windows(*visits)["brake_pad", "rear_left"].because.since_how == "seen"
    calm = (visits[0], visit("2026-02-22", 49_926, pad(3, "rear_left")))
    assert windows(*calm)["brake_pad", "rear_left"].because.since_how != "seen"


def test_brakes_stay_on_when_the_tires_are_changed_to_another_set() -> None:
    pads = [pad(value, "front_left") for value in (9.0, 8.5, 8.0)]
    days, sets = ("2025-06-10", "2025-12-10", "2026-06-10"), ("summer", "winter", "summer")
    visits = zip(days, (50_000, 54_000, 58_000), pads, sets, strict=True)
    found = window(*(visit(on, at, one, tire_set=name) for on, at, one, name in visits))
    assert found.because.readings_used == 3


def test_untold_rotation_is_seen_where_both_axles_have_changed_places() -> None:
    visits = (visit("2025-06-10", 50_000, *four(9, 5)), visit("2026-01-10", 54_000, *four(4.5, 8.5)))
    found = windows(*visits)
    assert {found["tire_tread", corner].because.since_how for corner in CORNERS} == {"seen"}
    # What came from the other axle brings its reading along: more is known than of a tire that was read but once.
    once = windows(visits[1])
    place = ("tire_tread", "front_left")
    assert found[place].now == pytest.approx(4.5, abs=0.4)
    assert width(found[place]) < width(once[place])


def test_a_front_axle_that_fell_is_no_rotation_while_the_rear_stayed() -> None:
    """A rotation moves both axles: what left the one has to turn up at the other (common practice)."""
    visits = (visit("2025-06-10", 50_000, *four(9, 6)), visit("2026-01-10", 54_000, *four(5.5, 5.5)))
    found = windows(*visits)
    assert found["tire_tread", "front_left"].because.since_how != "seen"
    assert found["tire_tread", "rear_left"].because.since_how != "seen"


def width(one: DueWindow) -> float:
    """Days between the early and the late point."""
    assert one.early is not None and one.late is not None
    return (one.late - one.early).days
