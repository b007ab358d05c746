"""What an item is: one thing on a car that wears, runs low, ages or is only looked at, and all the shop knows of it.

The catalogue that is shipped is `followup.core.items.BY_CODE`; a shop may add items of its own
(`items.catalogue_of`). Nobody else lists items. Each wear model is a frozen value; the
arithmetic that turns it into a due window lives in `core/forecast`.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import Any, Literal

from followup.core.vehicle import AXLES, POWERTRAINS, Vehicle

MILES_PER_KM = 1 / 1.609344
MM_PER_32ND = 25.4 / 32
MM_PER_UNIT = {"mm": 1.0, "32nds": MM_PER_32ND, "in": 25.4}
PSI_PER_UNIT = {"psi": 1.0, "kPa": 1 / 6.894757293168, "bar": 100 / 6.894757293168}

NOT_CHECKED = ("drum", "wheel_cover", "locked_lug", "no_lift", "customer_refused", "no_time", "too_hot")
LEVELS = ("full", "ok", "low", "empty", "not_readable")
LOOKS = (
    "even", "streaks", "scored", "cracked", "rust_lip", "pitted", "heat_spots", "dirty",
    "inner_edge", "outer_edge", "center", "cupped", "leaking",
)  # fmt: skip
# What each look means where an item says no other: to be done now, or looked at again; `even` and `rust_lip` are fine.
LOOKS_DUE_NOW = ("streaks", "cracked", "dirty", "leaking")
LOOKS_LOOK_AGAIN = ("scored", "pitted", "heat_spots", "inner_edge", "outer_edge", "center", "cupped")
HOW = ("wheel_off", "wheel_on", "estimate")
# A wheel left on, a guess: a reading's variance is so many times that of a wheel taken off (assumption).
HOW_VARIANCE = {"wheel_on": 2.0, "estimate": 4.0}
DID = ("replaced", "repaired", "topped_off", "rotated", "adjusted", "serviced")

Condition = Literal["fine", "keep an eye on it", "due soon", "due now", "not checked"]


class UnlikeUnits(Exception):
    """These two units do not measure the same thing."""


def converted(value: float, unit: str, to: str) -> float:
    """`value` in another unit of the same kind (thickness: mm, 32nds, in; pressure: psi, kPa, bar).

    Raises `UnlikeUnits` where the two do not measure the same thing.
    """
    if unit == to:
        return value
    for table in (MM_PER_UNIT, PSI_PER_UNIT):
        if unit in table and to in table:
            return value * table[unit] / table[to]
    raise UnlikeUnits(f"{unit} cannot be turned into {to}")


@dataclass(frozen=True)
class Limit:
    """A value at which an item is due; `kind` is "action" (the shop recommends) or "legal" (the state's law)."""

    value: float
    unit: str
    kind: Literal["action", "legal"] = "action"

    def is_reached_by(self, value: float, unit: str, falls: bool = True) -> bool:
        """True where `value`, in the unit it was entered in, is due by this limit.

        The limit is turned into the entered unit, never the other way round, so that a change of unit flips no
        verdict (2/32 in is 1.5875 mm). The shop recommends *at* its limit; the law asks for *at least* its limit, so
        a value that equals a legal limit has not reached it. Millionths are rounding, not wear.
        """
        beyond = round(value - converted(self.value, self.unit, unit), 6)
        beyond = -beyond if falls else beyond
        return beyond >= 0 if self.kind == "action" else beyond > 0


@dataclass(frozen=True)
class Field:
    """One thing that can be entered for an item, on the form and in an inspection line.

    `name` is the key of the inspection contract ("value", "across", "inner", "level", "date_code" ...).
    Numbers outside [`least`, `most`] (in the first of `units`) are impossible and refused.
    """

    name: str
    kind: Literal["number", "numbers", "choice", "date", "date_code", "month", "text", "yes_no"]
    words: str
    units: tuple[str, ...] = ()
    least: float | None = None
    most: float | None = None
    choices: tuple[str, ...] = ()


@dataclass(frozen=True)
class Job:
    """The work that an item asks for: the skill it needs and the labor hours it takes."""

    work: str
    skill: Literal["general", "tires", "brakes", "electric"]
    hours: float


@dataclass(frozen=True)
class WearPrior:
    """What is expected of one position before it is measured; logs are natural, rates per 1,000 miles in `unit`.

    `between_cars` and `between_items` are the log standard deviations of the rate (tau_u, tau_e of the design);
    `reading_error` is the standard deviation of one reading, `gauge_step` the width it is rounded to.
    """

    new_value: float
    new_spread: float
    rate_per_1000_miles: float
    between_cars: float
    between_items: float
    reading_error: float
    gauge_step: float
    mate_error: float
    usually_replaced_at: float
    replaced_spread: float


@dataclass(frozen=True)
class DistanceWear:
    """Falls with distance from new to the limit (tread, pads, shoes, rotors)."""

    prior: Callable[[Vehicle, str], WearPrior]


@dataclass(frozen=True)
class Life:
    """Ages from its replacement: life is log-normal in time, and in miles where `median_miles` is given (the first).

    A reading value below `weak_below` (in the item's unit) moves the median by `weak_shift_days`.
    """

    median_days: float
    log_spread: float
    median_miles: float | None = None
    weak_below: float | None = None
    weak_shift_days: float = 0.0


@dataclass(frozen=True)
class Interval:
    """Due at a date or a distance since it was last done, whichever comes first, without spread of its own.

    The `notice` is how long before the interval ends the shop recommends it.
    """

    days: float | None
    miles: float | None
    notice_days: float = 0.0
    notice_miles: float = 0.0


# The marks as amounts below full; from `ok` to `low` is one.
AMOUNTS_BELOW_FULL = (("full", 0.0), ("ok", 0.5), ("low", 1.5), ("empty", 2.0))


@dataclass(frozen=True)
class Level:
    """Runs low: amounts below full of each mark, and how fast it is used; due at the amount of `due_at`."""

    amounts: tuple[tuple[str, float], ...]
    due_at: str
    amount_per_day: float | None = None
    amount_per_1000_miles: float | None = None
    log_spread: float = 0.6
    winter_factor: float = 1.0


@dataclass(frozen=True)
class Rise:
    """Rises with time from `start` at its change (water in brake fluid, percent a year).

    The spreads are those of `WearPrior` (those of brake fluid unless said: a strip reads water to about 0.3 %, common
    practice); `replaced_beyond` is how far beyond its limit it usually is when it is changed.
    """

    start: float
    per_year: float
    log_spread: float
    new_spread: float = 0.2
    reading_error: float = 0.3
    gauge_step: float = 0.1
    mate_error: float = 0.1
    replaced_beyond: float = 0.5
    replaced_spread: float = 1.0


@dataclass(frozen=True)
class Fall(Rise):
    """Falls with time from `start` at its change."""


@dataclass(frozen=True)
class Looks:
    """Judged by its looks alone: what each word means, and after how many days to look again."""

    due_now: tuple[str, ...] = LOOKS_DUE_NOW
    look_again: tuple[str, ...] = LOOKS_LOOK_AGAIN
    look_again_days: int = 182


@dataclass(frozen=True)
class AsFound:
    """Works or does not, today: no forecast; either now, or looked at again at the next visit.

    `choices` are words of the reading's `field`; those that are neither fine (the first) nor `due_now` are looked at
    again.
    """

    choices: tuple[str, ...] = ()
    due_now: tuple[str, ...] = ()
    field: str = "found_as"


@dataclass(frozen=True)
class Dated:
    """Due at the date written on it (a sticker's month, a sealant kit's date), told in the reading's `field`."""

    field: str
    notice_days: float = 0.0


WearModel = DistanceWear | Life | Interval | Level | Rise | Looks | AsFound | Dated


@dataclass(frozen=True)
class Item:
    """One kind of thing that is inspected.

    `models` are tried in order: the first that has what it needs answers.
    `measured_by` names the fields that hold the number that wear is computed with, in `unit`; the lowest of several
    counts (the highest where it does not fall). Where the number is worked out (thickness over the stamped minimum),
    `measure` does it from what was entered; it returns None where something is missing. See `items.reading_value`.
    One that is not `is_in_use` was switched off by the shop: what was read stays, nothing more is asked or forecast.
    `near` is how little above its action limit it is done all the same where the car is there; None: not counted on.
    `goes_with_tires` is True for wear that is rotated between the axles and that belongs to a labelled set of tires.
    `words` is for staff pages; what customers read is the phrase file `message_templates/<language>/items/<code>.toml`,
    or by language in `phrases` with the same keys, where a shop wrote it.
    """

    code: str
    words: str
    part: Literal["reception", "lift"]
    fields: tuple[Field, ...]
    models: tuple[WearModel, ...]
    job: Job
    positions: tuple[str, ...] = ("",)
    unit: str | None = None
    falls: bool = True
    action_limit: Limit | None = None
    legal_limit: Limit | None = None
    powertrains: tuple[str, ...] = POWERTRAINS
    is_top_off_free: bool = False
    is_brakes_or_tires: bool = False
    goes_with_tires: bool = False
    measured_by: tuple[str, ...] = ("value", "across", "inner", "outer")
    measure: Callable[[Mapping[str, Any]], float | None] | None = None
    winter_action_limit: Limit | None = None
    near: float | None = None
    is_in_use: bool = True
    phrases: Mapping[str, Mapping[str, Any]] | None = None

    @property
    def is_named(self) -> bool:
        """True where texts may name it: a shop's own item has no words until a second person looked at them."""
        return self.phrases is None or bool(self.phrases)

    @cached_property
    def measured_units(self) -> tuple[str, ...]:
        """The units of the number that counts: another field may be in another (miles beside percent)."""
        names = self.measured_by or ("value",)
        return tuple(unit for field in self.fields if field.name in names for unit in field.units)

    @property
    def is_forecast(self) -> bool:
        """True where a due window is computed; found-as-is items have none."""
        return not all(isinstance(model, AsFound) for model in self.models)

    def exists_on(self, vehicle: Vehicle) -> bool:
        """False where the car is known not to have it (an electric car has no engine oil)."""
        return vehicle.powertrain is None or vehicle.powertrain in self.powertrains

    def field(self, name: str) -> Field | None:
        """The field of that name, or None where the item has none."""
        return next((one for one in self.fields if one.name == name), None)

    def limit(
        self, kind: str = "action", changed: Mapping[str, float] | None = None, tire_set: str | None = None
    ) -> Limit | None:
        """The limit of that kind; `changed` are the shop's own values by item code, in the unit of the limit.

        Winter tires have their own action limit; a shop's own value for the item wins over both.
        """
        usual = self.legal_limit if kind == "legal" else self.action_limit
        if usual is not None and changed and self.code in changed:
            return Limit(changed[self.code], usual.unit, usual.kind)
        if kind == "action" and tire_set == "winter" and self.winter_action_limit:
            return self.winter_action_limit
        return usual

    def places(self, position: str) -> tuple[str, ...]:
        """The item's own positions that `position` means: itself, both sides of an axle, or all where none is told.

        () where the item has no such position.
        """
        if position in self.positions:
            return (position,)
        if not position:
            return self.positions
        return tuple(side for side in AXLES.get(position, ()) if side in self.positions)


# Items by their codes, in the order in which they are shown: those that are shipped, then the shop's own.
Catalogue = Mapping[str, Item]


def in_use(catalogue: Catalogue) -> list[Item]:
    """The items that are asked for and forecast, in order: all but those that the shop switched off."""
    return [one for one in catalogue.values() if one.is_in_use]
