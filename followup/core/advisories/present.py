"""What was last measured on a car and still stands: readings that no work, newer reading or long time has overtaken."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta
from math import erfc, sqrt

from followup.core.forecast.history import Reading
from followup.core.item import HOW_VARIANCE, DistanceWear, Item, converted
from followup.core.items import BY_CODE
from followup.core.vehicle import Vehicle
from followup.core.visit import Work

TREAD, PAD, ROTATION, ALIGNMENT = "tire_tread", "brake_pad", "tire_rotation", "alignment"
# What was measured longer ago says little of how the car is now (assumption).
STALE = timedelta(days=365)
# Readings so near in time may be compared: a visit can take some days (assumption; a week wears about 1/500 in).
TOGETHER = timedelta(days=7)
# Work after which a pad is no longer as it was measured.
_PAD_WORK = ("replaced", "repaired", "adjusted", "serviced")
# The step of a gauge whose numbers lie between its usual marks.
_FINE_STEP = 0.1


@dataclass(frozen=True)
class Spot:
    """What was read at one place. `position` is where that part is on the car now: "" where a rotation was told
    without its moves; `read_at` where it was read."""

    reading: Reading
    position: str
    read_at: str

    @property
    def lowest(self) -> float:
        """The number that counts, as entered: the lowest of several."""
        assert self.reading.number is not None
        return self.reading.number.value

    @property
    def unit(self) -> str:
        """The unit that was entered."""
        assert self.reading.number is not None
        return self.reading.number.unit

    @property
    def on(self) -> date:
        """The day of the reading."""
        return self.reading.on

    @property
    def is_moved(self) -> bool:
        """True where a rotation was told since."""
        return self.position != self.read_at

    def value_in(self, unit: str) -> float:
        """The lowest in another unit."""
        return converted(self.lowest, self.unit, unit)


def variance_of(vehicle: Vehicle, spot: Spot, unit: str) -> float:
    """The variance of one reading, in `unit` squared: the hand's error and the step of the gauge that was used.

    sigma^2 x (1 with the wheel off, 2 on, 4 guessed) + r^2 / 12, as in the forecast.
    """
    item = BY_CODE[spot.reading.item]
    prior = next(one for one in item.models if isinstance(one, DistanceWear)).prior(vehicle, spot.read_at)
    error = converted(prior.reading_error, item.unit or spot.unit, unit)
    step = converted(_gauge_step(item, spot, prior.gauge_step), spot.unit, unit)
    return error**2 * HOW_VARIANCE.get(spot.reading.entered.how or "", 1.0) + step**2 / 12


def _gauge_step(item: Item, spot: Spot, usual_step: float) -> float:
    """In the unit that was entered: the usual step, or a finer one where a number lies between its marks."""
    usual = usual_step if spot.unit == item.unit else 1.0 if spot.unit == "32nds" else _FINE_STEP
    entered = spot.reading.entered
    numbers = [one for one in (entered.value, entered.inner, entered.outer, *entered.across) if one is not None]
    return usual if all(abs(one / usual - round(one / usual)) < 1e-6 for one in numbers) else _FINE_STEP


def chance_beyond(difference: float, bound: float, variance: float) -> float:
    """The chance that the true difference exceeds `bound`, given the measured one and the variance of its error.

    Errors are normal and nothing else is supposed of the car: Phi((difference - bound) / sd).
    """
    return 0.5 * erfc((bound - difference) / sqrt(2 * variance))


def present(item: str, readings: Iterable[Reading], work: Sequence[Work], as_of: date) -> list[Spot]:
    """The last measured number of the item at each place, where it still stands on the day `as_of`."""
    known = sorted((one for one in readings if one.on <= as_of), key=lambda one: one.on)
    of_item = [one for one in known if one.item == item and one.number is not None]
    if item == TREAD:
        of_item = _on_the_car(of_item, known)
    last: dict[str, Reading] = {}
    for reading in of_item:
        last |= dict.fromkeys(BY_CODE[item].places(reading.position), reading)
    done = sorted((one for one in work if one.on <= as_of), key=lambda one: one.on)
    follow = _moved_on if item == TREAD else _still_there
    spots = [
        spot
        for place, reading in last.items()
        if as_of - reading.on <= STALE and (spot := follow(Spot(reading, place, place), done))
    ]
    return list(_one_a_place(spots))


def _on_the_car(tread: list[Reading], known: list[Reading]) -> list[Reading]:
    """Readings of the set of tires that is on the car now."""
    told = [one.tire_set for one in known if one.tire_set]
    now_on = told[-1] if told else None
    return [one for one in tread if one.tire_set in (None, now_on)]


def _moved_on(spot: Spot, done: list[Work]) -> Spot | None:
    """Where the tire is after the work since; None where it is no longer on the car. It was read first, then done."""
    for work in done:
        if work.on < spot.on or work.item not in (TREAD, ROTATION):
            continue
        if work.item == TREAD and work.did == "replaced":
            if not spot.position or spot.position in BY_CODE[TREAD].places(work.position):
                return None
        elif is_rotation(work):
            moves = dict(work.moved)
            spot = replace(spot, position=moves.get(spot.position, spot.position) if moves else "")
    return spot


def is_rotation(work: Work) -> bool:
    """True for work that moved tires: told as such, or a rotation that was done."""
    return (work.item, work.did) == (TREAD, "rotated") or work.item == ROTATION


def _still_there(spot: Spot, done: list[Work]) -> Spot | None:
    is_worked_on = any(
        work.item == PAD
        and work.did in _PAD_WORK
        and work.on >= spot.on
        and spot.position in BY_CODE[PAD].places(work.position)
        for work in done
    )
    return None if is_worked_on else spot


def _one_a_place(spots: list[Spot]) -> Iterator[Spot]:
    """Where told moves bring two tires to one place, nobody knows where they are."""
    count = Counter(spot.position for spot in spots)
    for spot in spots:
        yield spot if count[spot.position] == 1 else replace(spot, position="")
