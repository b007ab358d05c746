"""What the windows of worn items rest on: readings of the part, the wear line with its band, how sure its slope is.

The band ahead is the first-passage model itself: the value that is passed by a day with a chance of 10, 50, 90 %, so
that the line meets the limit on the very days of the window. Behind the last reading it is the joint normal of value
and wear rate, run backwards.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

import numpy as np
from scipy.special import ndtri

from followup.core.forecast.cars import ItemHistory
from followup.core.forecast.evidence import (
    Apart,
    Evidence,
    OnSeason,
    ShownLine,
    ShownPoint,
    ShownReading,
    Wide,
)
from followup.core.forecast.history import Reading
from followup.core.forecast.odometer_use import odometer_use
from followup.core.forecast.passage import first_passage, still_in_use
from followup.core.forecast.season import Array, Clock
from followup.core.forecast.usage import UsageAhead
from followup.core.forecast.wear import ORIGINAL, VOID, WearBelief
from followup.core.forecast.wear_items import WearAxle, gauge_step, value_and_variance
from followup.core.forecast.window import DueWindow

CHANCES = (0.1, 0.5, 0.9)
_PROBITS = tuple(float(ndtri(chance)) for chance in CHANCES)
_LEVELS = 24
_STEPS_AHEAD, _STEPS_BEHIND = 20, 8
# Beyond five years a line says no more than that nobody knows.
_LONGEST_DAYS, _SHORTEST_DAYS = 1826.0, 60.0
_MOST_READINGS = 10


@dataclass(frozen=True)
class WornRows:
    """Rows of worn items as they were forecast, for their evidence: `places` are (number of the axle, side)."""

    axles: Sequence[WearAxle]
    places: Sequence[tuple[int, int]]
    belief: WearBelief
    limit: Array
    replaced_at: Array
    replaced_spread: Array
    usage: UsageAhead
    cars: np.ndarray
    origin: Array
    clock: Clock

    def evidence(self, windows: Sequence[DueWindow]) -> list[Evidence]:
        """The evidence of each row; `windows` are the same rows'."""
        in_use = still_in_use(self.belief, self.replaced_at, self.replaced_spread)
        days, ahead = self._ahead(in_use, self._last_days(windows))
        left = np.maximum(in_use.value - self.limit, 0.3)
        miles, miles_variance = self.usage.at(self.cars, left * 1000 / np.exp(in_use.log_rate + self._log_daily))
        return [
            self._of_row(row, windows[row], in_use, days[row], ahead[:, row], float(miles[row]),
                         float(miles_variance[row]))
            for row in range(len(windows))
        ]  # fmt: skip

    @property
    def _log_daily(self) -> Array:
        return self.usage.at_reference(self.cars)

    def _last_days(self, windows: Sequence[DueWindow]) -> list[list[float]]:
        """Days after the origin that the line must go through: early, likely, late, then its end."""
        found = []
        for window, origin in zip(windows, self.origin.tolist(), strict=True):
            known = [on.toordinal() - origin for on in (window.early, window.likely, window.late) if on is not None]
            inside = [day for day in known if 0 < day < _LONGEST_DAYS]
            end = 1.1 * known[2] if len(known) == 3 else _LONGEST_DAYS
            found.append([*inside, min(max(end, _SHORTEST_DAYS), _LONGEST_DAYS)])
        return found

    def _ahead(self, in_use: WearBelief, through: list[list[float]]) -> tuple[Array, Array]:
        """Calendar days after the origin (rows, days), and the values at each chance (chances, rows, days)."""
        days = self._days_ahead(through)
        at_origin = self.clock.at(self.origin)
        passed = np.stack([self.clock.at(self.origin + column) - at_origin for column in days.T], axis=1)
        levels, reached = self._passages(in_use)
        spread = np.sqrt(in_use.value_variance)
        values = np.empty((len(CHANCES), *days.shape))
        for number, probit in enumerate(_PROBITS):
            now = in_use.value + probit * spread
            for row in range(len(days)):
                is_ahead = (reached[number, row] > 0) & np.isfinite(reached[number, row]) & (levels[row] < now[row])
                when = np.concatenate([[0.0], np.maximum.accumulate(reached[number, row, is_ahead])])
                values[number, row] = np.interp(passed[row], when, [now[row], *levels[row, is_ahead]])
        return days, values

    def _days_ahead(self, through: list[list[float]]) -> Array:
        """Equal steps to the end of each row's line, its own days, and those on which its tires go off or on."""
        rows = []
        for row, own in enumerate(through):
            season = self.axles[self.places[row][0]].scale.season
            changes, day = [], float(self.origin[row])
            while season is not None and (day := season.next_change(day)) < self.origin[row] + own[-1]:
                changes.append(day - self.origin[row])
            rows.append(sorted({*np.linspace(0, own[-1], _STEPS_AHEAD).tolist(), *own, *changes}))
        longest = max(len(one) for one in rows)
        return np.array([[*one, *[one[-1]] * (longest - len(one))] for one in rows])

    def _passages(self, in_use: WearBelief) -> tuple[Array, Array]:
        """Values from above the present one to the end (rows, levels), and when each is passed at each chance."""
        highest = in_use.value + 3 * np.sqrt(in_use.value_variance)
        falls = np.array([self.axles[number].item.falls for number, _ in self.places])
        shown = np.array([self.axles[number].shown_limit.value for number, _ in self.places])
        lowest = np.where(falls, 0.0, -shown)
        grid = lowest[:, None] + (highest - lowest)[:, None] * np.linspace(1, 0, _LEVELS)[None, :]
        levels = -np.sort(-np.concatenate([grid, self.limit[:, None]], axis=1), axis=1)
        again = np.repeat(np.arange(len(levels)), levels.shape[1])
        times = first_passage(
            _rows_of(self.belief, again),
            levels.ravel(),
            self.replaced_at[again],
            self.replaced_spread[again],
            self.usage,
            self.cars[again],
        )
        return levels, np.stack([times.quantile(chance).reshape(levels.shape) for chance in CHANCES])

    def _of_row(
        self,
        row: int,
        window: DueWindow,
        in_use: WearBelief,
        days: Array,
        ahead: Array,
        log_miles: float,
        miles_variance: float,
    ) -> Evidence:
        number, side = self.places[row]
        axle = self.axles[number]
        one = axle.sides[side]
        chances = self.belief.chances[:, row]
        readings = _readings(axle, one, bool(chances[VOID] >= 0.5))
        origin = float(self.origin[row])
        begin = _begins(axle, readings, bool(chances[ORIGINAL] >= 0.5), origin)
        value, variance = float(in_use.value[row]), float(in_use.value_variance[row])
        log_rate, rate_variance = float(in_use.log_rate[row]), float(in_use.log_rate_variance[row])
        behind = _behind(axle, begin, origin, value, variance, log_rate, rate_variance, float(in_use.covariance[row]))
        points = [*behind, *zip((origin + days).tolist(), *ahead.tolist(), strict=True)]
        swing = math.exp(_PROBITS[2] * math.sqrt(miles_variance))
        rate, miles = math.exp(log_rate), math.exp(log_miles)
        known, own = _shares(axle, side, rate, float(self.belief.log_rate_variance[row]))
        left = max(value - float(self.limit[row]), 0.3)
        return Evidence(
            unit=one.item.unit or "",
            readings=readings,
            lines=(ShownLine("value", _points(axle, points)),),
            odometer=None if axle.is_by_time else odometer_use(axle.car),
            miles_a_day_between=None if axle.is_by_time else (miles / swing, miles * swing),
            known_share=known,
            own_share=own,
            wide=_widest(variance / left**2, rate_variance, 0.0 if axle.is_by_time else miles_variance),
            season=_season(axle, window.as_of),
        )


def _rows_of(belief: WearBelief, rows: np.ndarray) -> WearBelief:
    return WearBelief(
        belief.log_rate[rows],
        belief.log_rate_variance[rows],
        belief.value[rows],
        belief.value_variance[rows],
        belief.covariance[rows],
        belief.chances[:, rows],
    )


def _begins(axle: WearAxle, readings: Sequence[ShownReading], is_original: bool, origin: float) -> float:
    """The day on which the line begins: when the part was put on, where that is known, else its first reading."""
    own = [float(one.on.toordinal()) for one in readings if one.apart is None]
    first = min(own, default=origin)
    since, first_used = axle.sets[-1].since_day, axle.car.track.first_used
    if since is not None:
        return min(since, first)
    return first_used if is_original and first_used is not None and axle.new_at is not None else first


def _behind(
    axle: WearAxle,
    begin: float,
    origin: float,
    value: float,
    variance: float,
    log_rate: float,
    rate_variance: float,
    covariance: float,
) -> list[tuple[float, float, float, float]]:
    """(day, low, likely, high) from the part's beginning up to the last day, without that."""
    if origin - begin < 1:
        return []
    steps = _STEPS_BEHIND * (3 if axle.scale.put_on or axle.scale.season else 1)
    found = []
    for day in np.linspace(begin, origin, steps, endpoint=False).tolist():
        worn = math.exp(log_rate) * max(axle.end_at - axle.scale.at(day), 0.0)
        spread = math.sqrt(max(variance + 2 * covariance * worn + worn**2 * rate_variance, 1e-6))
        found.append((day, *(value + worn + probit * spread for probit in _PROBITS)))
    return found


def _points(axle: WearAxle, points: Sequence[tuple[float, float, float, float]]) -> tuple[ShownPoint, ...]:
    """As shown: what rises is turned round again, nothing lies below nothing; one point a day."""
    found: dict[date, ShownPoint] = {}
    for day, low, likely, high in points:
        if not axle.item.falls:
            turned = axle.shown_limit.value
            low, likely, high = turned - high, turned - likely, turned - low
        on = date.fromordinal(round(day))
        found[on] = ShownPoint(on, max(likely, 0.0), max(low, 0.0), max(high, 0.0))
    return tuple(found.values())


def _readings(axle: WearAxle, one: ItemHistory, are_older_void: bool) -> tuple[ShownReading, ...]:
    """The latest readings of this place; those that are not of the present part say why."""
    of_part = {it.where for it in axle.sets[-1].observations if it.is_reading and it.side == one.position}
    gauge = gauge_step(axle.sides, axle.prior)
    measured = [it for it in one.readings if it.value is not None]
    last = max((it.on for it in measured if axle.scale.at(it.on.toordinal()) in of_part), default=None)
    found = []
    for reading in measured[-_MOST_READINGS:]:
        number, known = reading.number, value_and_variance(one.item, reading, axle.prior.reading_error, gauge)
        assert number is not None and known is not None
        apart = None if _counts(axle, reading, of_part) else _apart(axle, one, reading)
        if apart is None and are_older_void and reading.on != last:
            apart = "void"
        found.append(
            ShownReading(
                reading.on, number.value, number.unit, reading.value, math.sqrt(known[1]), reading.odometer_miles, apart
            )
        )
    return tuple(found)


def _counts(axle: WearAxle, reading: Reading, of_part: set[float]) -> bool:
    day = reading.on.toordinal()
    return axle.scale.is_on(day) and axle.scale.at(day) in of_part


def _apart(axle: WearAxle, one: ItemHistory, reading: Reading) -> Apart:
    if not axle.scale.is_on(reading.on.toordinal()):
        return "other_set"
    if axle.sets[-1].since_how == "seen":
        return "seen"
    since = axle.sets[-1].since_day
    works = [it for it in one.work if since is not None and it.on.toordinal() == since]
    is_rotation = any(it.did == "rotated" or (it.item != one.item.code and it.did == "serviced") for it in works)
    return "rotated" if is_rotation else "replaced"


def _shares(axle: WearAxle, side: int, rate: float, variance: float) -> tuple[float, float]:
    """How much of what is known of the wear rate comes from this car, and from the readings of this very part.

    By precision: the rest of what the prior's variance became, and the weighted sum of squares of distance (1.3).
    """
    population = axle.prior.between_cars**2 + axle.prior.between_items**2
    known = min(max(1 - variance / population, 0.0), 1.0)
    own = [it for it in axle.sets[-1].observations if it.side in ("", axle.sides[side].position)]
    weight = sum(1 / it.variance for it in own)
    if not own or weight <= 0:
        return known, 0.0
    mean = sum(it.where / it.variance for it in own) / weight
    spread = sum((it.where - mean) ** 2 / it.variance for it in own)
    return known, min(spread * rate**2 * variance, known)


def _widest(reading: float, rate: float, distance: float) -> Wide:
    parts: dict[Wide, float] = {"reading": reading, "rate": rate, "distance": distance}
    return max(parts, key=lambda one: parts[one])


def _season(axle: WearAxle, as_of: date) -> OnSeason | None:
    season, label, day = axle.scale.season, axle.scale.mine, float(as_of.toordinal())
    if season is None or label is None:
        return None
    return OnSeason(label, season.holds(day), date.fromordinal(math.ceil(season.next_change(day))))
