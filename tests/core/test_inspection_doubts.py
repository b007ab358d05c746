"""What is doubtful is asked about: odometers by the shop's default rules (design), readings by common practice."""

from datetime import UTC, datetime
from typing import Any

import pytest

from followup.core.inspection import InspectionLine, read_line
from followup.core.inspection_doubts import doubts_of
from followup.core.items import BY_CODE
from followup.core.visit import Work
from tests.core.lines import line_text

NOW = datetime(2026, 11, 23, 9, 0, tzinfo=UTC)


def _line(on: str, miles: float | None = None, **changes: Any) -> InspectionLine:
    told = {"inspection": on, "inspected_at": f"{on}T09:00", "odometer": miles, "unit": "mi" if miles else None}
    line = read_line(line_text(**told | changes), NOW, BY_CODE)
    assert isinstance(line, InspectionLine)
    return line


def _doubts(line: InspectionLine, *earlier: InspectionLine, work: tuple[Work, ...] = ()) -> list[str]:
    return [doubt.field for doubt in doubts_of(line, earlier, work)]


def _tread(on: str, depth: float, place: str = "front_left", **changes: Any) -> InspectionLine:
    reading = {"item": "tire_tread", "position": place, "unit": "32nds", "value": depth}
    return _line(on, readings=[reading], **changes)


@pytest.mark.parametrize(
    ("miles", "is_doubtful"),
    [
        (30_001, False),
        (30_000, False),
        (29_999, True),  # under the last one
        (33_000, False),  # 300 mi a day for ten days
        (33_001, True),
    ],
)
def test_an_odometer_against_the_one_before(miles: float, is_doubtful: bool) -> None:
    before = _line("2026-01-01", 30_000)
    assert bool(_doubts(_line("2026-01-11", miles), before)) is is_doubtful


def test_neighbors_are_found_by_time_not_by_arrival() -> None:
    arrived_first = _line("2026-06-01", 33_000)
    assert _doubts(_line("2026-01-01", 30_000), arrived_first) == []
    assert _doubts(_line("2026-01-01", 34_000), arrived_first) == ["odometer"]
    earlier = (_line("2026-03-01", 32_000), _line("2025-06-01", 25_000))
    assert _doubts(_line("2026-04-01", 31_000), *earlier) == ["odometer"]
    assert _doubts(_line("2026-04-01", 31_000), *reversed(earlier)) == ["odometer"]


@pytest.mark.parametrize(("share", "is_doubtful"), [(1.609, True), (1.609 * 1.029, True), (1.609 * 1.04, False)])
def test_kilometers_entered_as_miles(share: float, is_doubtful: bool) -> None:
    # A mile is 1.609344 km; within 3 % of that times the expected odometer (design). 50 mi a day are expected here.
    history = (_line("2025-01-01", 20_000), _line("2025-04-11", 25_000))
    expected = 25_000 + 50 * 200
    assert bool(_doubts(_line("2025-10-28", expected * share), *history)) is is_doubtful


def test_no_odometer_no_doubt() -> None:
    assert _doubts(_line("2026-01-01"), _line("2025-01-01", 20_000)) == []
    assert _doubts(_line("2026-01-01", 5_000)) == []


def test_tread_that_grew_without_work() -> None:
    before = _tread("2025-06-01", 4)
    assert _doubts(_tread("2026-01-01", 10), before) == ["readings.0"]
    assert _doubts(_tread("2026-01-01", 5), before) == []  # One step of a gauge.
    assert _doubts(_tread("2026-01-01", 10, place="rear_left"), before) == []


def test_tread_that_grew_after_work() -> None:
    replaced = [{"item": "tire_tread", "position": "front", "did": "replaced"}]
    assert _doubts(_tread("2026-01-01", 10), _tread("2025-06-01", 4, work_done=replaced)) == []
    told = [{**replaced[0], "on": "2025-09-01"}]
    assert _doubts(_tread("2026-01-01", 10, work_done=told), _tread("2025-06-01", 4)) == []
    at_the_rear = [{**replaced[0], "position": "rear"}]
    assert _doubts(_tread("2026-01-01", 10), _tread("2025-06-01", 4, work_done=at_the_rear)) == ["readings.0"]
    long_ago = [{**replaced[0], "on": "2025-01-01"}]
    assert _doubts(_tread("2026-01-01", 10, work_done=long_ago), _tread("2025-06-01", 4)) == ["readings.0"]
    in_a_visit = (Work("tire_tread", "", "replaced", datetime(2025, 9, 1, tzinfo=UTC).date()),)
    assert _doubts(_tread("2026-01-01", 10), _tread("2025-06-01", 4), work=in_a_visit) == []


def test_another_set_of_tires_is_not_growth() -> None:
    summer = _tread("2025-06-01", 4, tire_set="summer")
    assert _doubts(_tread("2026-01-01", 10, tire_set="winter"), summer) == []
    assert _doubts(_tread("2026-05-01", 10, tire_set="summer"), summer) == ["readings.0"]


def test_a_change_of_unit_is_not_growth() -> None:
    # 6/32 in is 4.7625 mm.
    millimeters = {"item": "tire_tread", "position": "front_left", "unit": "mm", "value": 4.8}
    assert _doubts(_line("2026-01-01", readings=[millimeters]), _tread("2025-06-01", 6)) == []


def test_a_side_far_from_the_other() -> None:
    def line(left: float, right: float) -> InspectionLine:
        sides = (("front_left", left), ("front_right", right))
        readings = [{"item": "brake_pad", "position": side, "unit": "mm", "value": mm} for side, mm in sides]
        return _line("2026-01-01", readings=readings)

    assert _doubts(line(9, 3)) == ["readings.0"]
    assert _doubts(line(7, 5)) == []


STAGGERED = {"id": "V-1", "tire_size_front": "235/50R18", "tire_size_rear": "265/45R18"}
DIRECTIONAL = {"id": "V-1", "directional": True}
BACK = {"front_left": "rear_left", "rear_left": "front_left"}
CROSSED = {"front_left": "rear_right", "rear_right": "front_left"}


def _rotated(on: str, moved: dict[str, str], vehicle: dict[str, Any] | None = None) -> InspectionLine:
    work = [{"item": "washer_fluid", "did": "topped_off"}, {"item": "tire_tread", "did": "rotated", "moved": moved}]
    return _line(on, work_done=work, vehicle=vehicle or {"id": "V-1"})


def test_a_rotation_that_the_tires_do_not_allow_is_asked_about() -> None:
    """Common practice: never between axles where sizes differ, same side only where directional."""
    assert _doubts(_rotated("2026-03-02", BACK, STAGGERED)) == ["work_done.1.moved"] * 2
    assert _doubts(_rotated("2026-03-02", CROSSED, DIRECTIONAL)) == ["work_done.1.moved"] * 2
    assert _doubts(_rotated("2026-03-02", BACK, DIRECTIONAL)) == []
    assert _doubts(_rotated("2026-03-02", CROSSED)) == []


def test_what_a_line_leaves_out_of_its_car_was_told_before() -> None:
    before = _line("2026-01-02", vehicle=STAGGERED)
    (first, _) = doubts_of(_rotated("2026-03-02", BACK), [before])
    assert first.says.startswith("left front to left rear: front (235/50R18) and rear (265/45R18) sizes differ: please")
    # The tires were changed since.
    one_size = _line("2026-02-02", vehicle={"id": "V-1", "tire_size_rear": "235/50R18"})
    assert _doubts(_rotated("2026-03-02", BACK), before, one_size) == []
