"""What is impossible in a line of the inspection contract, held against the catalogue, each fault with what to do.

Works on what was told as plain JSON values, so that a form and a file are checked alike.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date, datetime
from difflib import get_close_matches
from typing import Any

from followup.core.date_code import BadDateCode, read_date_code
from followup.core.item import LEVELS, LOOKS, MM_PER_UNIT, PSI_PER_UNIT, Catalogue, Field, Item, converted

Told = Mapping[str, Any]

# What a reading may say beside the fields of its item.
BESIDE = ("item", "position", "unit", "how", "not_checked", "note")
PERCENT = ("percent", "%", "pct")
DISTANCE = ("mi", "km")


@dataclass(frozen=True)
class Fault:
    """One thing that is wrong: the `field` (a path with dots, "" for the line as a whole) and what to do about it."""

    field: str
    says: str


def says_of(kind: str, message: str, place: tuple[int | str, ...], context: Mapping[str, Any], known: list[str]) -> str:
    """The words for a fault of structure; `kind`, `message` and `context` as pydantic tells them."""
    name = str(place[-1]) if place else ""
    if kind == "missing":
        return "is missing: please give it"
    if kind == "extra_forbidden":
        return _unknown(name, known)
    if kind == "literal_error":
        return f"use one of: {context.get('expected', '')}".replace("'", "")
    if name == "phone":
        return "write the number with its country, like +13125550147"
    if kind == "timezone_naive":
        return "write the wall time at the shop, without an offset: 2026-03-02T09:10"
    if kind.startswith("datetime"):
        return "write day and time like 2026-03-02T09:10"
    if kind.startswith("date"):
        return "write the day like 2026-03-02"
    if kind == "value_error":
        return message.removeprefix("Value error, ")
    return message[:1].lower() + message[1:] + ": please correct it"


def _unknown(name: str, known: list[str]) -> str:
    if any(sign in name.lower() for sign in ("percent", "pct")):
        return "unknown; a percent of pad life is refused: enter mm"
    near = get_close_matches(name, known, n=1)
    return f"unknown: did you mean {near[0]}?" if near else "unknown: leave it out"


def check_line(told: Told, latest: datetime, catalogue: Catalogue) -> list[Fault]:
    """Every impossible thing of a well-formed line; `latest` is the last wall time that is not in the future."""
    faults = [*_check_times(told, latest), *_check_odometer(told)]
    day = datetime.fromisoformat(told["inspected_at"]).date() if "inspected_at" in told else latest.date()
    vehicle = told.get("vehicle")
    powertrain = vehicle.get("powertrain") if isinstance(vehicle, dict) else None
    for place, reading in enumerate(told.get("readings", ())):
        faults += check_reading(f"readings.{place}", reading, powertrain, day, told.get("unit"), catalogue)
    faults += _check_twice(told.get("readings", ()), catalogue)
    for part in ("work_done", "recommended"):
        for place, entry in enumerate(told.get(part, ())):
            faults += _check_entry(f"{part}.{place}", entry, powertrain, told, day, catalogue)
    return faults


def _check_times(told: Told, latest: datetime) -> Iterator[Fault]:
    for name in ("inspected_at", "opened_at", "closed_at"):
        if name in told and datetime.fromisoformat(told[name]) > latest:
            yield Fault(name, "lies in the future: look at the clock and enter the time again")
        if name in told and datetime.fromisoformat(told[name]).year < 1950:
            yield Fault(name, "lies before 1950: enter the year again")
    if "inspection" not in told and not ("opened_at" in told or "closed_at" in told):
        yield Fault("opened_at", "is missing: a visit needs the time at which it was opened or closed")
    if "opened_at" in told and "closed_at" in told and told["closed_at"] < told["opened_at"]:
        yield Fault("closed_at", "lies before the visit was opened: correct one of the two")
    customer, vehicle = told.get("customer", {}), told.get("vehicle", {})
    consent = customer.get("consent")
    if consent and "phone" not in customer:
        yield Fault("customer.phone", "is missing: consent belongs to a number")
    if consent and date.fromisoformat(consent["given_on"]) > latest.date():
        yield Fault("customer.consent.given_on", "lies in the future: enter the day again")
    first = vehicle.get("first_used_on") if isinstance(vehicle, dict) else None
    if first and not date(1900, 1, 1) <= date.fromisoformat(first) <= latest.date():
        yield Fault("vehicle.first_used_on", "lies in the future or before 1900: enter the day again")


def _check_odometer(told: Told) -> Iterator[Fault]:
    if "odometer" in told and "unit" not in told:
        yield Fault("unit", "is missing: say whether the odometer is in mi or km")


def _check_item(place: str, told: Told, powertrain: str | None, catalogue: Catalogue) -> Iterator[Fault]:
    item = catalogue.get(told["item"])
    if item is None:
        near = get_close_matches(told["item"], list(catalogue), n=1)
        hint = f"did you mean {near[0]}?" if near else "use an item of the catalogue, or add it as the shop's own"
        yield Fault(f"{place}.item", f'there is no item "{told["item"]}": {hint}')
        return
    if powertrain is not None and powertrain not in item.powertrains:
        kind = powertrain.replace("_", "-")
        car = f"{'an' if kind[0] in 'aeiou' else 'a'} {kind} car"
        yield Fault(
            f"{place}.item", f"{car} has no {item.words.lower()}: leave it out, or correct the vehicle's powertrain"
        )
    position = told.get("position", "")
    if position and not item.places(position):
        allowed = ", ".join(one for one in item.positions if one) or "none: leave it out"
        yield Fault(f"{place}.position", f"{item.words.lower()} is not found there; positions are {allowed}")


def check_reading(
    place: str, told: Told, powertrain: str | None, day: date | None, line_unit: str | None, catalogue: Catalogue
) -> list[Fault]:
    """Every impossible thing of one reading; `day` is that of the inspection, None where it could not be read."""
    faults = list(_check_item(place, told, powertrain, catalogue))
    item = catalogue.get(told["item"])
    if item is None:
        return faults
    entered = {name: value for name, value in told.items() if name not in BESIDE}
    if "not_checked" in told:
        if entered:
            faults.append(Fault(f"{place}.not_checked", f"says not checked, and {', '.join(entered)}: keep one"))
        return faults
    if not entered:
        faults.append(Fault(place, "holds no reading: give one, or say not_checked and why"))
    if "" not in item.positions and not told.get("position"):
        faults.append(Fault(f"{place}.position", f"is missing: use one of {', '.join(item.positions)}"))
    for name, value in entered.items():
        faults += _check_field(place, name, value, told, day, line_unit, item)
    return faults


def _is_claimed(unit: str, told: Told, besides: Field, item: Item) -> bool:
    """True where another field of the reading takes that unit: a percentage may stand beside an odometer in km."""
    others = (one for one in item.fields if one is not besides and one.name in told)
    return any(unit in one.units for one in others)


def _one_unit(field: Field, told: Told, line_unit: str | None, item: Item) -> str | None:
    """The unit that a field's number is in; None where it has to be told."""
    unit = told.get("unit")
    if len(field.units) == 1 and (unit is None or _is_claimed(unit, told, field, item)):
        return field.units[0]
    if unit is None and line_unit in field.units and field.name.endswith("odometer"):
        return line_unit
    return unit


def _check_field(
    place: str, name: str, value: Any, told: Told, day: date | None, line_unit: str | None, item: Item
) -> Iterator[Fault]:
    field = item.field(name)
    at = f"{place}.{name}"
    if field is None:
        takes = ", ".join(one.name for one in item.fields)
        yield Fault(at, f"{item.words.lower()} has no {name}; it takes {takes}")
    elif field.kind in ("number", "numbers"):
        yield from _check_numbers(place, field, value, _one_unit(field, told, line_unit, item), item)
    elif field.kind == "choice" and value not in _choices(field):
        yield Fault(at, f"use one of: {', '.join(_choices(field))}")
    elif field.kind == "date_code":
        yield from _check_date_code(at, value, day)
    elif field.kind == "date" and name != "due_on" and day is not None and date.fromisoformat(value) > day:
        yield Fault(at, "lies after the inspection: enter the day again")


def _choices(field: Field) -> tuple[str, ...]:
    """The form offers what is usual for the item; a line may say any word of the contract."""
    if field.name == "looks":
        return LOOKS
    return LEVELS if field.name == "level" else field.choices


def _check_numbers(place: str, field: Field, value: Any, unit: str | None, item: Item) -> Iterator[Fault]:
    at = f"{place}.{field.name}"
    allowed = " or ".join(field.units)
    if unit is None and field.units:
        yield Fault(f"{place}.unit", f"is missing: say {allowed}")
        return
    if unit in PERCENT and "mm" in field.units:
        yield Fault(f"{place}.unit", f"a percent of {item.words.lower()} life is refused: enter mm")
        return
    if unit is not None and field.units and unit not in field.units:
        yield Fault(f"{place}.unit", f"{field.words.lower()} is entered in {allowed}, not in {unit}")
        return
    for number in value if field.kind == "numbers" else (value,):
        least, most = (_in_unit(bound, field, unit) for bound in (field.least, field.most))
        if (least is not None and number < least) or (most is not None and number > most):
            shown = unit or "".join(field.units[:1])
            yield Fault(at, f"{number:g} cannot be: {least:g} to {most:g} {shown} can; please read it again".strip())


def _in_unit(bound: float | None, field: Field, unit: str | None) -> float | None:
    if bound is None or unit is None or unit == field.units[0]:
        return bound
    if any(unit in table for table in (MM_PER_UNIT, PSI_PER_UNIT)):
        return round(converted(bound, field.units[0], unit), 3)
    if {unit, field.units[0]} == {"F", "C"}:
        return round((bound - 32) / 1.8 if unit == "C" else bound * 1.8 + 32, 3)
    return bound


def _check_date_code(at: str, value: str, day: date | None) -> Iterator[Fault]:
    try:
        code = read_date_code(value)
    except BadDateCode as bad:
        yield Fault(at, str(bad))
        return
    if day is not None and code.made_on > day:
        yield Fault(at, "says that the tire was made after the inspection: please read it again")


def _check_twice(readings: Any, catalogue: Catalogue) -> Iterator[Fault]:
    seen: set[tuple[str, str, str]] = set()
    for place, told in enumerate(readings):
        item = catalogue.get(told["item"])
        names = [name for name in told if name not in BESIDE or name == "not_checked"]
        keys = {
            (told["item"], at, name) for at in (item.places(told.get("position", "")) if item else ()) for name in names
        }
        if keys & seen:
            yield Fault(f"readings.{place}", "was told twice in this inspection: keep one of the two")
        seen |= keys


def _check_entry(
    place: str, told: Told, powertrain: str | None, line: Told, day: date, catalogue: Catalogue
) -> Iterator[Fault]:
    yield from _check_item(place, told, powertrain, catalogue)
    if "odometer" in told and "unit" not in told and "unit" not in line:
        yield Fault(f"{place}.unit", "is missing: say whether the odometer is in mi or km")
    if "on" in told and date.fromisoformat(told["on"]) > day:
        yield Fault(f"{place}.on", "lies after the inspection: enter the day again")
    item = catalogue.get(told["item"])
    if told.get("did") == "topped_off" and item is not None and item.is_brakes_or_tires and not item.is_top_off_free:
        yield Fault(f"{place}.did", f"{item.words.lower()} is never topped off: pads and leaks are looked at first")
    for old, new in told.get("moved", {}).items():
        if item is not None and not (item.places(old) and item.places(new)):
            yield Fault(f"{place}.moved", f"{old} to {new}: use positions of {item.words.lower()}")
