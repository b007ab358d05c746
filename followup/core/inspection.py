"""The inspection contract as types: what comes in, one JSON object a line, and `read_line`, which refuses it in words.

What is *impossible* (an unknown item, a tread of 30/32, an inspection in the future) is refused here, all faults of a
line at once. What is only *doubtful* is asked about: `core/inspection_doubts.py`. Rows of CSV become such lines in
`core/inspection_csv.py`.
"""

from __future__ import annotations

import hashlib
import json
import re
from datetime import date, datetime, timedelta
from typing import Annotated, Any, Literal

from pydantic import (
    AfterValidator,
    BaseModel,
    ConfigDict,
    Field,
    NaiveDatetime,
    StringConstraints,
    ValidationError,
)

from followup.core.inspection_check import Fault, check_line, check_reading, says_of
from followup.core.item import MILES_PER_KM, Catalogue
from followup.core.vehicle import Vehicle
from followup.core.visit import Work

# A tablet's clock may run ahead of the shop's by this much without its inspection lying "in the future".
CLOCKS_DIFFER = timedelta(minutes=10)


class BadLine(Exception):
    """This line cannot be taken: see its faults."""

    def __init__(self, faults: list[Fault]) -> None:
        self.faults = tuple(faults)
        super().__init__("; ".join(f"{one.field}: {one.says}" if one.field else one.says for one in faults))


# All but tab and line feed.
_CONTROL = re.compile("[\x00-\x08\x0b-\x1f]")


def _printable(text: str) -> str:
    if _CONTROL.search(text):
        raise ValueError("holds a control character: write it anew")
    return text


Short = Annotated[
    str, StringConstraints(strip_whitespace=True, min_length=1, max_length=120), AfterValidator(_printable)
]
Words = Annotated[str, StringConstraints(max_length=4000), AfterValidator(_printable)]
Number = Annotated[str, StringConstraints(pattern=r"^\+[1-9][0-9]{7,14}$")]
Month = Annotated[str, StringConstraints(pattern=r"^(19|20)[0-9]{2}-(0[1-9]|1[0-2])$")]
Odometer = Annotated[float, Field(ge=0, le=2_000_000)]
DistanceUnit = Literal["mi", "km"]
Position = Literal["", "front_left", "front_right", "rear_left", "rear_right", "spare", "front", "rear"]
TireSet = Literal["summer", "winter", "all_season"]
Did = Literal["replaced", "repaired", "topped_off", "rotated", "adjusted", "serviced"]


def miles(odometer: float | None, unit: str | None) -> float | None:
    """An odometer in miles; None stays None."""
    return None if odometer is None else odometer * (MILES_PER_KM if unit == "km" else 1.0)


class _Strict(BaseModel):
    model_config = ConfigDict(strict=True, frozen=True, extra="forbid", allow_inf_nan=False)

    def told(self) -> dict[str, Any]:
        """What was told, as plain JSON values by the contract's names; what was left out or null is absent."""
        return self.model_dump(mode="json", by_alias=True, exclude_defaults=True)


class ConsentLine(_Strict):
    """What the customer agreed to, by the exact words that were shown."""

    covers: Annotated[tuple[Literal["visits", "upkeep", "offers"], ...], Field(min_length=1)]
    given_on: date
    how: Literal["signed_paper", "tablet", "web_form", "text_in", "spoken", "imported_unproven"]
    words: Words = ""
    words_version: Words = ""
    language: Literal["en", "es"] = "en"
    number_is_own_and_adult: bool = False


class CustomerLine(_Strict):
    """A person, or a fleet's contact; `phone` is E.164."""

    id: Short
    name: Short | None = None
    phone: Number | None = None
    language: Literal["en", "es"] | None = None
    fleet: bool = False
    consent: ConsentLine | None = None


class VehicleLine(_Strict):
    """A car as it was told; everything but its id may be missing."""

    id: Short
    label: Short | None = None
    vehicle_class: Literal["car", "suv", "pickup", "van"] | None = Field(default=None, alias="class")
    driven: Literal["front", "rear", "all"] | None = None
    first_used_on: date | None = None
    run_flat: bool | None = None
    oil_check: Literal["dipstick", "display", "none"] | None = None
    powertrain: Literal["gasoline", "diesel", "hybrid", "plug_in", "electric"] | None = None
    vin: Short | None = None
    plate: Short | None = None
    rear_brakes: Literal["disc", "drum"] | None = None
    parking_brake: Short | None = None
    tire_size_front: Short | None = None
    tire_size_rear: Short | None = None
    directional: bool | None = None
    tire_set: TireSet | None = None

    def vehicle(self) -> Vehicle:
        """The same as a value of the core."""
        told = self.model_dump(exclude={"id", "tire_set"})
        return Vehicle(code=self.id, **told)


class Reading(_Strict):
    """One reading: which fields an item takes is the catalogue's matter (`Item.fields`)."""

    item: Short
    position: Position = ""
    unit: Short | None = None
    how: Literal["wheel_off", "wheel_on", "estimate"] | None = None
    not_checked: (
        Literal["drum", "wheel_cover", "locked_lug", "no_lift", "customer_refused", "no_time", "too_hot"] | None
    ) = None
    note: Words | None = None
    value: float | None = None
    across: Annotated[tuple[float, ...], Field(max_length=12)] = ()
    inner: float | None = None
    outer: float | None = None
    minimum: float | None = None
    looks: (
        Literal[
            "even", "streaks", "scored", "cracked", "rust_lip", "pitted", "heat_spots", "dirty",
            "inner_edge", "outer_edge", "center", "cupped", "leaking",
        ] | None
    ) = None  # fmt: skip
    level: Literal["full", "ok", "low", "empty", "not_readable"] | None = None
    found_as: Short | None = None
    pulsates: bool | None = None
    date_code: Short | None = None
    good_until: Month | None = None
    kind: Short | None = None
    lamp: Short | None = None
    found: float | None = None
    placard: float | None = None
    set_to: float | None = None
    water_percent: float | None = None
    copper_ppm: float | None = None
    boiling_point: float | None = None
    freeze_point: float | None = None
    range_left: float | None = None
    life_percent: float | None = None
    verdict: Short | None = None
    volts: float | None = None
    cca: float | None = None
    cca_rated: float | None = None
    changed_on: date | None = None
    done_on: date | None = None
    done_odometer: float | None = None
    due_on: date | None = None
    due_odometer: float | None = None


class WorkLine(_Strict):
    """Work done, here or (with its own `on` and `odometer`) elsewhere or earlier; a position may be an axle."""

    item: Short
    position: Position = ""
    did: Did
    moved: dict[str, str] = Field(default_factory=dict)
    on: date | None = None
    odometer: Odometer | None = None
    unit: DistanceUnit | None = None
    quarts: Annotated[float, Field(gt=0, le=60)] | None = None

    def work(self, line_on: date, line_miles: float | None, line_unit: str | None) -> Work:
        """The same as a value of the core; day and odometer of the line where it has none of its own."""
        own = miles(self.odometer, self.unit or line_unit)
        at = own if own is not None or self.on is not None else line_miles
        return Work(self.item, self.position, self.did, self.on or line_on, at, tuple(sorted(self.moved.items())))


class RecommendedLine(_Strict):
    """What was advised, and what the customer decided."""

    item: Short
    position: Position = ""
    decision: Literal["approved", "declined", "later", "no_answer"] = "no_answer"
    why: Literal["price", "time", "elsewhere", "think"] | None = None
    until: date | None = None
    told_by: Short | None = None


Works = Annotated[tuple[WorkLine, ...], Field(max_length=200)]
Recommended = Annotated[tuple[RecommendedLine, ...], Field(max_length=200)]


class InspectionLine(_Strict):
    """One inspection, or one part of it. `inspected_at` is wall time at the shop."""

    inspection: Short
    inspected_at: NaiveDatetime
    part: Literal["reception", "lift"] | None = None
    odometer: Odometer | None = None
    unit: DistanceUnit | None = None
    technician: Short | None = None
    customer: CustomerLine
    vehicle: VehicleLine
    tire_set: TireSet | None = None
    readings: Annotated[tuple[Reading, ...], Field(min_length=1, max_length=300)]
    work_done: Works = ()
    recommended: Recommended = ()
    visit: Short | None = None

    @property
    def odometer_miles(self) -> float | None:
        """The odometer in miles."""
        return miles(self.odometer, self.unit)

    @property
    def tires_on(self) -> str | None:
        """The set of tires that is on the car, if told."""
        return self.tire_set or self.vehicle.tire_set


class VisitLine(_Strict):
    """A visit that is opened or closed; `vehicle` is the car's id, times are wall times at the shop."""

    visit: Short
    vehicle: Short
    opened_at: NaiveDatetime | None = None
    closed_at: NaiveDatetime | None = None
    odometer: Odometer | None = None
    unit: DistanceUnit | None = None
    work_done: Works = ()
    recommended: Recommended = ()

    @property
    def odometer_miles(self) -> float | None:
        """The odometer in miles."""
        return miles(self.odometer, self.unit)


def read_line(text: str, now: datetime, catalogue: Catalogue) -> InspectionLine | VisitLine:
    """Read one line of the contract; `now` is the shop's wall time (an aware one is read as that wall time).

    Raises `BadLine` with every fault of the line, each with the field and what to do about it.
    """
    raw = _object(text)
    model = InspectionLine if "inspection" in raw or "visit" not in raw else VisitLine
    faults: list[Fault] = []
    line: InspectionLine | VisitLine | None = None
    try:
        line = model.model_validate_json(json.dumps(raw))
    except ValidationError as refused:
        faults = _faults(refused, model)
    if line is not None:
        wall = now.replace(tzinfo=None) + CLOCKS_DIFFER
        faults = check_line(line.told(), wall, catalogue)
    else:
        faults += _faults_of_good_readings(raw, catalogue)
    if faults or line is None:
        raise BadLine(faults)
    return line


def content_hash(line: InspectionLine | VisitLine) -> str:
    """The same for the same content, whatever the order of keys, the spaces, or nulls where nothing was told."""
    plain = json.dumps(line.told(), sort_keys=True, ensure_ascii=False, separators=(",", ":"))
    return hashlib.sha256(plain.encode()).hexdigest()


class _Twice(ValueError):
    """The line names the same key twice."""


def _once(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    """One object of the line: a key must stand once, and null is the same as not told."""
    found: dict[str, Any] = {}
    for key, value in pairs:
        if key in found:
            raise _Twice(f'"{key}" stands twice in one object: keep one')
        found[key] = value
    return {key: value for key, value in found.items() if value is not None}


def _object(text: str) -> dict[str, Any]:
    try:
        raw = json.loads(text, object_pairs_hook=_once)
    except _Twice as twice:
        raise BadLine([Fault("", str(twice))]) from twice
    except (ValueError, RecursionError) as broken:
        raise BadLine([Fault("", f"this is not one JSON object on one line ({broken}): write it anew")]) from broken
    if not isinstance(raw, dict):
        raise BadLine([Fault("", "a line is one JSON object in braces: write it anew")])
    return raw


def _faults(refused: ValidationError, model: type[BaseModel]) -> list[Fault]:
    known = sorted({field.alias or name for part in _parts(model) for name, field in part.model_fields.items()})
    faults = []
    errors = refused.errors(include_url=False)
    within = {error["loc"][:steps] for error in errors for steps in range(1, len(error["loc"]))}
    for error in errors:
        if error["type"] == "too_short" and error["loc"] in within:
            continue  # It is short only because what stands in it could not be read; that is told.
        place = ".".join(str(step) for step in error["loc"])
        faults.append(Fault(place, says_of(error["type"], error["msg"], error["loc"], error.get("ctx", {}), known)))
    return faults


def _parts(model: type[BaseModel]) -> tuple[type[BaseModel], ...]:
    return (model, ConsentLine, CustomerLine, VehicleLine, Reading, WorkLine, RecommendedLine)


def _faults_of_good_readings(raw: dict[str, Any], catalogue: Catalogue) -> list[Fault]:
    """Where the line as a whole cannot be read, its well-formed readings are still held against the catalogue."""
    vehicle, readings = raw.get("vehicle"), raw.get("readings")
    powertrain = vehicle.get("powertrain") if isinstance(vehicle, dict) else None
    faults: list[Fault] = []
    for place, entered in enumerate(readings if isinstance(readings, list) else ()):
        try:
            reading = Reading.model_validate_json(json.dumps(entered))
        except ValidationError:
            continue  # Its faults were told with the line's.
        faults += check_reading(f"readings.{place}", reading.told(), powertrain, None, raw.get("unit"), catalogue)
    return faults
