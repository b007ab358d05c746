"""What is usual before a car was measured: the published values, and what a shop's own cars taught about them.

What was taught are corrections on top of the catalogue's `WearPrior`: a class of car that the shop never saw keeps its
published value times what the shop taught of all others. Plain values without numpy; fitting them is `learn.py`'s.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import asdict, dataclass, fields, replace
from functools import cached_property
from typing import Any

from followup.core.forecast.tire_seasons import USUAL, TireSeasons
from followup.core.item import WearPrior
from followup.core.vehicle import Vehicle

# The trait that every place of every car has.
EVERY = "every"
# What most cars are and what an untold car is taken for: they have no trait of their own.
_USUAL = ("car", "front", "gasoline")


@dataclass(frozen=True)
class UsagePrior:
    """What is usual before any odometer was read. Logs are natural; spreads are log standard deviations.

    10,500 miles a year at the median up to the age of 5, then 5 % less each year: NHTS 2017 as quoted by DOE Fact 1046
    (ages 1-5 above 12,000 on the mean, above 9 years 7,800). The spreads are assumptions.
    """

    log_miles_per_day: float = math.log(10_500 / 365.25)
    between_drivers: float = 0.42
    within_driver: float = 0.27
    wander_days: float = 365.0
    noise_days: float = 1.0
    full_use_years: float = 5.0
    decline_per_year: float = 0.05
    first_use_error_days: float = 90.0


@dataclass(frozen=True)
class WearLesson:
    """What a shop taught of one item: corrections of the published `WearPrior`.

    `log_rate` holds, by trait (`traits_of`), what is added to the log of the wear rate; a place of a car takes the sum
    over its traits. The others are factors. `cars` is from how many cars it was learned.
    """

    item: str
    log_rate: tuple[tuple[str, float], ...] = ()
    between_cars: float = 1.0
    between_items: float = 1.0
    reading_error: float = 1.0
    mate_error: float = 1.0
    cars: int = 0

    @cached_property
    def _by_trait(self) -> dict[str, float]:
        return dict(self.log_rate)

    def rate_factor(self, vehicle: Vehicle, position: str) -> float:
        """How many times the published rate that place of that car wears."""
        return math.exp(sum(self._by_trait.get(trait, 0.0) for trait in traits_of(vehicle, position)))

    def corrected(self, published: WearPrior, vehicle: Vehicle, position: str) -> WearPrior:
        """The prior of that place of that car as the shop taught it."""
        return replace(
            published,
            rate_per_1000_miles=published.rate_per_1000_miles * self.rate_factor(vehicle, position),
            between_cars=published.between_cars * self.between_cars,
            between_items=published.between_items * self.between_items,
            reading_error=published.reading_error * self.reading_error,
            mate_error=published.mate_error * self.mate_error,
        )


@dataclass(frozen=True)
class ShopPriors:
    """All that is usual at one shop. The default is what is published.

    `tire_seasons` come from where the shop is, and `gauges_round_down` (a gauge is read down to its last full mark) is
    a rule of the shop: neither is learned.
    """

    usage: UsagePrior = UsagePrior()
    wear: tuple[WearLesson, ...] = ()
    tire_seasons: TireSeasons = USUAL
    gauges_round_down: bool = False

    @cached_property
    def _by_item(self) -> dict[str, WearLesson]:
        return {one.item: one for one in self.wear}

    def lesson(self, item: str) -> WearLesson | None:
        """What was taught of that item, or None."""
        return self._by_item.get(item)

    def wear_prior(self, item: str, published: WearPrior, vehicle: Vehicle, position: str) -> WearPrior:
        """What is expected of that item at that place of that car."""
        lesson = self._by_item.get(item)
        return published if lesson is None else lesson.corrected(published, vehicle, position)

    def to_json(self) -> dict[str, Any]:
        """As plain JSON."""
        wear = [{**asdict(one), "log_rate": dict(one.log_rate)} for one in self.wear]
        return {"usage": asdict(self.usage), "wear": wear}

    @staticmethod
    def from_json(kept: Mapping[str, Any]) -> ShopPriors:
        """What `to_json` made; what a kept version does not hold yet takes its published value."""
        wear = [_known(WearLesson, one) for one in kept.get("wear", [])]
        for one in wear:
            one["log_rate"] = tuple(one.get("log_rate", {}).items())
        return ShopPriors(
            UsagePrior(**_known(UsagePrior, kept.get("usage", {}))), tuple(WearLesson(**one) for one in wear)
        )


PUBLISHED = ShopPriors()


def traits_of(vehicle: Vehicle, position: str) -> tuple[str, ...]:
    """What the wear rate at that place of that car may depend on; each may be taught a correction of its own."""
    axle = position.split("_")[0]
    driven = vehicle.driven if vehicle.driven not in _USUAL else None
    told = (
        EVERY,
        f"axle={axle}" if axle else None,
        f"axle={axle} driven={driven}" if axle and driven else None,
        *(f"{name}={value}" for name, value in _told_of(vehicle) if value and value not in _USUAL),
    )
    return tuple(one for one in told if one is not None)


def _told_of(vehicle: Vehicle) -> tuple[tuple[str, str | None], ...]:
    return ("class", vehicle.vehicle_class), ("powertrain", vehicle.powertrain)


def _known(of: type[Any], kept: Mapping[str, Any]) -> dict[str, Any]:
    names = {one.name for one in fields(of)}
    return {name: value for name, value in kept.items() if name in names}
