"""What a due window rests on, kept beside it for whoever asks why: readings, the line through them, odometer, spread.

Plain values without numpy, as windows are: pages draw them and put them into words, `wear_evidence.py` and
`timed_evidence.py` reckon them. Low and high are the 10 and 90 % points.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from itertools import pairwise
from typing import Any, Literal

# Why a reading is shown but does not count: the part was replaced or moved since, or is seen to be another one; the
# tires of another set were on; it does not fit the later one.
Apart = Literal["replaced", "rotated", "seen", "other_set", "void"]
# What a line is of: the value that wears, the share still good, miles and days of an interval that are used up, an
# amount that runs out.
LineOf = Literal["value", "good", "miles", "days", "amount"]
# What makes a window wide: how far the car is driven, how fast it wears, how well it was measured, since when it is on,
# how long such parts live.
Wide = Literal["distance", "rate", "reading", "since", "life"]


@dataclass(frozen=True)
class ShownReading:
    """One reading as it was entered, and in the unit of the chart with one standard deviation of error.

    `value` None: a word that has no place on the chart. `apart` says why it does not count; None: it does.
    """

    on: date
    measured: float | str
    measured_unit: str
    value: float | None = None
    error: float | None = None
    odometer_miles: float | None = None
    apart: Apart | None = None


@dataclass(frozen=True)
class ShownPoint:
    """A point of a line: as likely above as below, with its band; None where the line has no spread."""

    on: date
    likely: float
    low: float | None = None
    high: float | None = None


@dataclass(frozen=True)
class ShownLine:
    """A line from the part's beginning to beyond its late date."""

    of: LineOf
    points: tuple[ShownPoint, ...]

    def at(self, on: date) -> ShownPoint | None:
        """The line on a day, straight between its points; None outside them."""
        for before, after in pairwise(self.points):
            if before.on <= on <= after.on:
                share = (on - before.on).days / (after.on - before.on).days

                def between(begin: float | None, end: float | None, share: float = share) -> float | None:
                    return None if begin is None or end is None else begin + share * (end - begin)

                likely = before.likely + share * (after.likely - before.likely)
                return ShownPoint(on, likely, between(before.low, after.low), between(before.high, after.high))
        return None


@dataclass(frozen=True)
class OdometerUse:
    """Which odometer entries (day, miles) count, which were left out, and which (day, typed, taken) were put right."""

    used: tuple[tuple[date, float], ...] = ()
    left_out: tuple[tuple[date, float], ...] = ()
    put_right: tuple[tuple[date, float, float], ...] = ()


@dataclass(frozen=True)
class OnSeason:
    """A labelled set of tires: whether it is on by the season, and the day on which that changes next."""

    label: str
    is_on: bool
    changes_on: date


@dataclass(frozen=True)
class Evidence:
    """What one window rests on. `unit` is that of the chart: the item's, "share", "percent used" or "marks".

    `marks` are words on the chart's scale, `due_at` where an amount is due on it. `known_share` is how much of what is
    known of the wear rate comes from this car, `own_share` how much from the readings of this very part (the rest is
    what is usual). `interval` is (days, miles) of what is done regularly,
    `life_days` the usual (low, median, high).
    """

    unit: str
    readings: tuple[ShownReading, ...] = ()
    lines: tuple[ShownLine, ...] = ()
    marks: tuple[tuple[str, float], ...] = ()
    due_at: float | None = None
    odometer: OdometerUse | None = None
    miles_a_day_between: tuple[float, float] | None = None
    known_share: float | None = None
    own_share: float | None = None
    wide: Wide | None = None
    season: OnSeason | None = None
    interval: tuple[float | None, float | None] | None = None
    life_days: tuple[float, float, float] | None = None

    def to_json(self) -> dict[str, Any]:
        """As plain JSON, numbers to four digits; what is empty is left out."""
        # Not by asdict(): it copies every number of every point, which was a third of what a forecast took.
        kept = vars(self) | {
            "lines": [],
            "readings": [_without_empty(vars(one)) for one in self.readings],
            "odometer": None if self.odometer is None else vars(self.odometer),
            "season": None if self.season is None else vars(self.season),
        }
        made: dict[str, Any] = _plain(_without_empty(kept))
        # Most of all numbers are those of lines.
        lines = [{"of": line.of, "points": [_plain_point(one) for one in line.points]} for line in self.lines]
        return made | {"lines": lines} if lines else made

    @staticmethod
    def from_json(kept: Mapping[str, Any]) -> Evidence:
        """What `to_json` made."""
        told = dict(kept)
        told["readings"] = tuple(ShownReading(**(one | {"on": _day(one["on"])})) for one in kept.get("readings", ()))
        told["lines"] = tuple(
            ShownLine(line["of"], tuple(ShownPoint(_day(one[0]), *one[1:]) for one in line["points"]))
            for line in kept.get("lines", ())
        )
        told["marks"] = tuple((word, value) for word, value in kept.get("marks", ()))
        for name in ("miles_a_day_between", "interval", "life_days"):
            told[name] = tuple(kept[name]) if kept.get(name) is not None else None
        if told.get("odometer") is not None:
            entries = told["odometer"]
            told["odometer"] = OdometerUse(
                *(
                    tuple((_day(on), *miles) for on, *miles in entries.get(name, ()))
                    for name in ("used", "left_out", "put_right")
                )
            )
        if told.get("season") is not None:
            season = told["season"]
            told["season"] = OnSeason(**(season | {"changes_on": _day(season["changes_on"])}))
        return Evidence(**told)


def _day(text: str) -> date:
    return date.fromisoformat(text)


def _without_empty(kept: Mapping[str, Any]) -> dict[str, Any]:
    return {name: value for name, value in kept.items() if value is not None and value != () and value != []}


def _plain_point(point: ShownPoint) -> list[Any]:
    band = [None if one is None else round(float(one), 4) for one in (point.low, point.high)]
    return [point.on.isoformat(), round(float(point.likely), 4), *band]


def _plain(value: Any) -> Any:
    kind = type(value)
    if kind is float:
        return round(value, 4)
    if kind is list or kind is tuple:
        return [_plain(one) for one in value]
    if kind is dict:
        return {name: _plain(one) for name, one in value.items()}
    if isinstance(value, date):
        return value.isoformat()
    # A number of numpy's is a float too, by another name.
    return round(float(value), 4) if isinstance(value, float) else value
