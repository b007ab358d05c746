"""What a reading says on the day it was taken: the number that counts, and its condition in words.

What is ahead of a reading is the forecast's matter (`core/forecast`); here only what was measured now.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date

from dateutil.relativedelta import relativedelta

from followup.core.date_code import read_date_code
from followup.core.inspection import Reading
from followup.core.item import (
    LOOKS_DUE_NOW,
    LOOKS_LOOK_AGAIN,
    MM_PER_UNIT,
    AsFound,
    Condition,
    Dated,
    Item,
    Life,
    Looks,
    converted,
)
from followup.core.vehicle import Vehicle

WORST_FIRST: tuple[Condition, ...] = ("due now", "due soon", "keep an eye on it", "fine", "not checked")
# Where an association's guideline asks for new brake fluid, whatever its water.
COPPER_PPM_LIMIT = 200.0
DAYS_PER_YEAR = 365.25


@dataclass(frozen=True)
class Measured:
    """The number that counts, in the unit that it was entered in."""

    value: float
    unit: str


def measured(item: Item, reading: Reading) -> Measured | None:
    """The number that wear is judged by, as entered: the lowest of several (the highest where the item rises).

    None where the reading holds words only, or was not checked.
    """
    unit = reading.unit if reading.unit in item.measured_units else None
    if item.measure is not None:
        worked_out = item.measure(reading.told())
        # Shares come out in percent; a thickness stays in the unit of what was entered.
        own = unit if unit in MM_PER_UNIT and item.unit in MM_PER_UNIT else item.unit
        return None if worked_out is None else Measured(round(worked_out, 6), own or "")
    numbers: list[float] = []
    for name in item.measured_by:
        entered = getattr(reading, name, None)
        numbers += list(entered) if isinstance(entered, tuple) else [] if entered is None else [entered]
    if not numbers:
        return None
    return Measured(min(numbers) if item.falls else max(numbers), unit or item.unit or "")


def reading_value(item: Item, reading: Reading) -> float | None:
    """The same in the item's own unit, for the arithmetic of wear (32nds for tread, mm for pads); None without one.

    Verdicts are never taken from it: they compare in the unit that was entered (`present_condition`).
    """
    found = measured(item, reading)
    if found is None or item.unit is None:
        return None
    if {found.unit, item.unit} == {"F", "C"}:
        return found.value * 1.8 + 32 if item.unit == "F" else (found.value - 32) / 1.8
    if {found.unit, item.unit} == {"mi", "km"}:
        return found.value / 1.609344
    return converted(found.value, found.unit, item.unit)


def is_at_limit(
    item: Item, reading: Reading, kind: str, limits: Mapping[str, float], tire_set: str | None = None
) -> bool:
    """True where the number that counts has reached the item's limit of that kind; False without number or limit."""
    found, limit = measured(item, reading), item.limit(kind, limits, tire_set)
    if found is None or limit is None:
        return False
    if found.unit != limit.unit and found.unit not in MM_PER_UNIT:
        value = reading_value(item, reading)
        return value is not None and limit.is_reached_by(value, limit.unit, item.falls)
    return limit.is_reached_by(found.value, found.unit, item.falls)


def present_condition(
    item: Item,
    reading: Reading,
    vehicle: Vehicle,
    limits: Mapping[str, float],
    on: date,
    tire_set: str | None = None,
) -> Condition:
    """The condition that `reading` shows by itself on the day `on`; what lies ahead is not in it.

    `limits` are the shop's own action limits by item code. The worst word counts. A reading that says nothing is
    "not checked": nothing is fine that was not looked at.
    """
    if reading.not_checked is not None or not item.exists_on(vehicle):
        return "not checked"
    words = [*_by_words(item, reading), *_by_day(item, reading, on)]
    if measured(item, reading) is not None:
        words.append("due now" if is_at_limit(item, reading, "action", limits, tire_set) else "fine")
        words += _by_weakness(item, reading)
    if reading.copper_ppm is not None:
        words.append("due now" if reading.copper_ppm > COPPER_PPM_LIMIT else "fine")
    return min(words, key=WORST_FIRST.index, default="not checked")


def _by_words(item: Item, reading: Reading) -> Iterator[Condition]:
    looks = next((model for model in item.models if isinstance(model, Looks)), None)
    if reading.looks is not None:
        if reading.looks in (looks.due_now if looks else LOOKS_DUE_NOW):
            yield "due now"
        else:
            is_to_watch = reading.looks in (looks.look_again if looks else LOOKS_LOOK_AGAIN)
            yield "keep an eye on it" if is_to_watch else "fine"
    if reading.level is not None and reading.level != "not_readable":
        yield "due now" if reading.level in ("low", "empty") else "fine"
    for model in item.models:
        said = getattr(reading, model.field, None) if isinstance(model, AsFound) else None
        if isinstance(model, AsFound) and said is not None:
            yield "due now" if said in model.due_now else "fine" if said == model.choices[0] else "keep an eye on it"
    if reading.pulsates:
        yield "keep an eye on it"


def _by_weakness(item: Item, reading: Reading) -> Iterator[Condition]:
    value = reading_value(item, reading)
    for model in item.models:
        if isinstance(model, Life) and model.weak_below is not None and value is not None and value < model.weak_below:
            yield "keep an eye on it"


def _by_day(item: Item, reading: Reading, on: date) -> Iterator[Condition]:
    if reading.date_code is not None and item.action_limit is not None:
        years = (on - read_date_code(reading.date_code).made_on).days / DAYS_PER_YEAR
        yield "due now" if years >= item.action_limit.value else "fine"
    for model in item.models:
        told = getattr(reading, model.field, None) if isinstance(model, Dated) else None
        if isinstance(model, Dated) and told is not None:
            days_left = (last_day_of(told) - on).days
            yield "due now" if days_left < 0 else "due soon" if days_left <= model.notice_days else "fine"
    if reading.due_on is not None:
        yield "due now" if reading.due_on <= on else "fine"


def last_day_of(month: str) -> date:
    """The last day of "2026-08"."""
    return date.fromisoformat(f"{month}-01") + relativedelta(months=1, days=-1)


def made_on(reading: Reading) -> date | None:
    """When the tire was made, by its date code; None without one."""
    return read_date_code(reading.date_code).made_on if reading.date_code else None
