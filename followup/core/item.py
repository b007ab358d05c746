"""What an item is: one thing on a car that wears, runs low, ages or is only looked at, and all the shop knows of it.

The catalogue itself is `followup.core.items.ALL`; nobody else lists items. Each wear model is a frozen value; the
arithmetic that turns it into a due window lives in `core/forecast`.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Literal

from followup.core.vehicle import POWERTRAINS, Vehicle

MILES_PER_KM = 1 / 1.609344
MM_PER_32ND = 25.4 / 32

NOT_CHECKED = ("drum", "wheel_cover", "locked_lug", "no_lift", "customer_refused", "no_time", "too_hot")
LEVELS = ("full", "ok", "low", "empty", "not_readable")
LOOKS = (
    "even", "streaks", "scored", "cracked", "rust_lip", "pitted", "heat_spots", "dirty",
    "inner_edge", "outer_edge", "center", "cupped", "leaking",
)  # fmt: skip
HOW = ("wheel_off", "wheel_on", "estimate")
DID = ("replaced", "repaired", "topped_off", "rotated", "adjusted", "serviced")

Condition = Literal["fine", "keep an eye on it", "due soon", "due now", "not checked"]


@dataclass(frozen=True)
class Limit:
    """A value at which an item is due; `kind` is "action" (the shop recommends) or "legal" (the state's law)."""

    value: float
    unit: str
    kind: Literal["action", "legal"] = "action"


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
    """Ages from its replacement: life is log-normal in time, and in miles where `median_miles` is given (the first)."""

    median_days: float
    log_spread: float
    median_miles: float | None = None


@dataclass(frozen=True)
class Interval:
    """Due at a date or a distance since it was last done, whichever comes first, without spread of its own.

    The `notice` is how long before the interval ends the shop recommends it.
    """

    days: float | None
    miles: float | None
    notice_days: float = 0.0
    notice_miles: float = 0.0


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
    """Rises with time from `start` at its change (water in brake fluid, percent a year)."""

    start: float
    per_year: float
    log_spread: float


@dataclass(frozen=True)
class Looks:
    """Judged by its looks alone: what each word means, and after how many days to look again."""

    due_now: tuple[str, ...]
    look_again: tuple[str, ...]
    look_again_days: int = 182


@dataclass(frozen=True)
class AsFound:
    """Works or does not, today: no forecast; either now, or looked at again at the next visit."""

    choices: tuple[str, ...]
    due_now: tuple[str, ...]


WearModel = DistanceWear | Life | Interval | Level | Rise | Looks | AsFound


@dataclass(frozen=True)
class Item:
    """One kind of thing that is inspected.

    `reading_value` turns an entered reading into the number that wear is computed with (in `unit`, the lowest of
    several), or None where the reading holds only words; see `core/items`.
    `models` are tried in order: the first that has what it needs answers.
    `words` is for staff pages; what customers read is the phrase file `message_templates/<language>/items/<code>.toml`.
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

    @property
    def is_forecast(self) -> bool:
        """True where a due window is computed; found-as-is items have none."""
        return not all(isinstance(model, AsFound) for model in self.models)

    def exists_on(self, vehicle: Vehicle) -> bool:
        """False where the car is known not to have it (an electric car has no engine oil)."""
        return vehicle.powertrain is None or vehicle.powertrain in self.powertrains
