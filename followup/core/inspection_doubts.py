"""What is doubtful in an inspection: possible, but more likely an error of the hand. It is asked about, not refused.

The rules for odometers are the shop's defaults (design: doubtful odometer); the sizes for readings are common practice.
"""

from __future__ import annotations

from collections.abc import Container, Iterable, Iterator, Sequence
from datetime import datetime
from typing import Any

from followup.core.day_words import day_words
from followup.core.inspection import InspectionLine, Reading
from followup.core.inspection_check import Fault
from followup.core.item import MILES_PER_KM, MM_PER_UNIT, converted
from followup.core.rotation import doubts_of_moves
from followup.core.vehicle import AXLES, Vehicle
from followup.core.visit import Work

MOST_MILES_A_DAY = 300.0
# How near to 1.609 times the expected odometer looks like kilometers entered as miles.
NEAR_KILOMETERS = 0.03
USUAL_MILES_A_DAY = 30.0
# A lining or tread that gained more than this was replaced or misread: well over one step of any gauge.
GREW_MM = 1.2
SIDES_APART_MM = 2.5
PAIRS = tuple(AXLES.values())
IF_RIGHT = "please look again; if it is right, say so"


def doubts_of(
    line: InspectionLine, earlier: Iterable[InspectionLine], work: Sequence[Work] = (), rising: Container[str] = ()
) -> list[Fault]:
    """Every doubt about `line`, given the other inspections of the same car in any order.

    `work` is work known from elsewhere (visits), beside that of the inspections themselves; `rising` are items whose
    number rises with wear. Neighbors are found by `inspected_at`, not by order of arrival. Returns [] where nothing is
    doubtful.
    """
    others = sorted(earlier, key=lambda one: one.inspected_at)
    return [
        *_odometer(line, others),
        *_grown(line, others, work, rising),
        *_far_from_other_side(line),
        *_moved(line, others),
    ]


def _odometer(line: InspectionLine, others: list[InspectionLine]) -> Iterator[Fault]:
    now = line.odometer_miles
    known = [(one.inspected_at, one.odometer_miles) for one in others if one.odometer_miles is not None]
    if now is None or not known:
        return
    before = [one for one in known if one[0] <= line.inspected_at]
    after = [one for one in known if one[0] > line.inspected_at]
    if before and now < before[-1][1]:
        yield _says(line, f"is less than the {before[-1][1]:,.0f} mi of {day_words(before[-1][0])}")
    elif before:
        days = max((line.inspected_at - before[-1][0]).total_seconds() / 86_400, 1.0)
        if (now - before[-1][1]) / days > MOST_MILES_A_DAY:
            yield _says(line, f"is over {MOST_MILES_A_DAY:.0f} mi a day since {day_words(before[-1][0])}")
        if _looks_like_kilometers(now, before, line.inspected_at):
            yield _says(line, "is about what the car would show in kilometers")
    if after and now > after[0][1]:
        yield _says(line, f"is more than the {after[0][1]:,.0f} mi of {day_words(after[0][0])}, which is later")


def _says(line: InspectionLine, what: str) -> Fault:
    return Fault("odometer", f"{line.odometer:,.0f} {line.unit} {what}: {IF_RIGHT}")


def _looks_like_kilometers(now: float, before: list[tuple[datetime, float]], at: datetime) -> bool:
    last_at, last = before[-1]
    first_at, first = before[0]
    known_days = (last_at - first_at).total_seconds() / 86_400
    pace = (last - first) / known_days if known_days >= 30 else USUAL_MILES_A_DAY
    expected = last + max(pace, 0.0) * (at - last_at).total_seconds() / 86_400
    return expected > 0 and abs(now * MILES_PER_KM / expected - 1) <= NEAR_KILOMETERS


def thickness_mm(reading: Reading) -> float | None:
    """The lowest thickness of a reading in mm, whatever item it is of; None where it holds none."""
    if reading.unit not in MM_PER_UNIT:
        return None
    entered = [one for one in (reading.value, reading.inner, reading.outer, *reading.across) if one is not None]
    return converted(min(entered), reading.unit, "mm") if entered else None


def _grown(
    line: InspectionLine, others: list[InspectionLine], work: Sequence[Work], rising: Container[str]
) -> Iterator[Fault]:
    for place, reading in enumerate(line.readings):
        now = thickness_mm(reading)
        last = None if now is None else _last(reading, line, others)
        if now is None or last is None or reading.item in rising:
            continue
        found_in, was = last
        if now - was > GREW_MM and not _was_worked_on(reading, found_in, line, others, work):
            says = f"grew from {_in(was, reading)} on {day_words(found_in.inspected_at)} to {_in(now, reading)}"
            yield Fault(f"readings.{place}", f"{says} and no work was told: {IF_RIGHT}")


def _in(mm: float, reading: Reading) -> str:
    return f"{converted(mm, 'mm', reading.unit or 'mm'):g} {reading.unit}"


def _last(reading: Reading, line: InspectionLine, others: list[InspectionLine]) -> tuple[InspectionLine, float] | None:
    """The last thickness read before at the same place, on the same set of tires."""
    for other in reversed(others):
        if other.inspected_at > line.inspected_at or other.tires_on != line.tires_on:
            continue
        for one in other.readings:
            was = thickness_mm(one)
            if was is not None and (one.item, one.position) == (reading.item, reading.position):
                return other, was
    return None


def _was_worked_on(
    reading: Reading,
    since: InspectionLine,
    line: InspectionLine,
    others: list[InspectionLine],
    work: Sequence[Work],
) -> bool:
    """True where work on that item and place is known since; work of the earlier inspection came after its reading."""
    lines = [one for one in [*others, line] if since.inspected_at <= one.inspected_at <= line.inspected_at]
    known = [*work]
    for one in lines:
        known += [told.work(one.inspected_at.date(), one.odometer_miles, one.unit) for told in one.work_done]
    first, last = since.inspected_at.date(), line.inspected_at.date()
    return any(
        done.did in ("replaced", "repaired", "rotated")
        and first <= done.on <= last
        and done.item in (reading.item, "tire_rotation")
        and (not done.position or reading.position in (done.position, *AXLES.get(done.position, ())))
        for done in known
    )


def _far_from_other_side(line: InspectionLine) -> Iterator[Fault]:
    found: dict[tuple[str, str], tuple[int, Reading]] = {
        (one.item, one.position): (place, one) for place, one in enumerate(line.readings)
    }
    for (item, position), (place, reading) in found.items():
        other = next((right for left, right in PAIRS if left == position), None)
        if other is None or (item, other) not in found:
            continue
        here, there = thickness_mm(reading), thickness_mm(found[item, other][1])
        if here is not None and there is not None and abs(here - there) > SIDES_APART_MM:
            yield Fault(f"readings.{place}", f"is far from the other side ({_in(there, reading)}): {IF_RIGHT}")


def _moved(line: InspectionLine, others: list[InspectionLine]) -> Iterator[Fault]:
    """Tires told to have gone where sizes or direction do not let them: one of the two was told wrongly."""
    car = _car(line, others)
    for place, told in enumerate(line.work_done):
        for says in doubts_of_moves(car, told.moved):
            yield Fault(f"work_done.{place}.moved", f"{says}: {IF_RIGHT}")


def _car(line: InspectionLine, others: list[InspectionLine]) -> Vehicle:
    """The car with what was told of it last; what a line leaves out was told before."""
    known: dict[str, Any] = {}
    for one in (*others, line):
        known |= {name: value for name, value in vars(one.vehicle.vehicle()).items() if value is not None}
    return Vehicle(**known)
