"""The ways of inviting that are compared: from which day each of them says that a car is to be told."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import Literal

import numpy as np

from followup.core.forecast.season import DAYS_A_YEAR, Array
from followup.core.shop import ShopRules
from followup.rehearsal.policies.cars import LivedCars, Read

SIX_MONTHS = 182
GUESSED_MILES_A_YEAR = 12_000.0


@dataclass(frozen=True)
class Policy:
    """One way of inviting; `rules` are those of the send rule where it asks for any."""

    name: str
    kind: Literal["none", "reminder", "repeated", "guess", "ours", "oracle"]
    rules: ShopRules = field(default_factory=ShopRules)


def plain(chance: float) -> Policy:
    """The chance of the first item alone, however far from its limit it may be at the visit."""
    rules = replace(ShopRules(), send_at_chance=chance, send_worn_at_chance=chance, near_at_chance=0.0)
    return Policy(f"ours, q = {chance:.2f} alone", "ours", rules)


AS_SHIPPED = Policy("ours as shipped", "ours")
PLAIN = (0.10, 0.25, 0.50)
POLICIES = (
    Policy("none", "none"),
    Policy("six-month reminder", "reminder"),
    Policy("six-month reminder, each six months", "repeated"),
    Policy("mileage guess", "guess"),
    AS_SHIPPED,
    *(plain(chance) for chance in PLAIN),
    Policy("oracle", "oracle"),
)


@dataclass
class Known:
    """What each row's shop knows without a forecast: the odometer at which each part was new, (rows, 2, 4)."""

    new_at: Array

    @staticmethod
    def nothing(rows: int) -> Known:
        """Parts are taken to be as old as the car until the shop replaces them."""
        return Known(np.zeros((rows, 2, 4)))

    def note_work(self, rows: np.ndarray, done: np.ndarray, odometer: Array) -> None:
        """`done` (rows, 2, 2), by axle, was replaced at that odometer and written down."""
        sides = np.repeat(done, 2, axis=2)
        self.new_at[rows] = np.where(sides, odometer[:, None, None], self.new_at[rows])


def guessed_days(cars: LivedCars, known: Known, rows: np.ndarray, read: Read, limits: Array) -> Array:
    """Days until the first part meets its limit by new minus now over the odometer, at 12,000 miles a year, (rows,).

    Parts that do not seem worn are not due by this rule.
    """
    new = np.stack([parts.new_value[rows] for parts in cars.kinds], axis=1)
    value, driven = read.value[rows], read.odometer[rows, None, None] - known.new_at[rows]
    with np.errstate(invalid="ignore", divide="ignore"):
        days = (value - limits) * driven / (new - value) / GUESSED_MILES_A_YEAR * DAYS_A_YEAR
    is_worn = (value < new) & (driven > 0)
    return np.asarray(np.where(is_worn, np.maximum(days, 0.0), np.inf).min(axis=(1, 2)))


def foreseen(cars: LivedCars, rules: ShopRules) -> tuple[np.ndarray, np.ndarray]:
    """Which rows will truly have something at its action limit, and at its legal one, once the lead time is over."""
    value = cars.ahead(round(rules.lead_days / 7))
    due, legal = ((value <= limits).any(axis=(1, 2)) for limits in (cars.action, cars.legal))
    return np.asarray(due), np.asarray(legal)
