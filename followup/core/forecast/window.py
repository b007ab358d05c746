"""The due window of one item: when it is due early, likely and late, how sure that is, and why.

Plain values without numpy: pages, planning and storage read them without the arithmetic behind them.
"""

from __future__ import annotations

import math
from bisect import bisect_left, bisect_right
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Any, Literal

from followup.core.forecast.evidence import Evidence
from followup.core.forecast.value_ahead import ValueAhead
from followup.core.item import Condition, Limit

# The chances at which a curve is kept; the twenty dots of the due chart (2.5, 7.5 ... 97.5 %) are among them.
CURVE_CHANCES = (0.001, 0.01, *(round(0.025 * step, 3) for step in range(1, 40)), 0.99, 0.999)
DOTS = tuple(round(0.025 + 0.05 * dot, 3) for dot in range(20))
# Ten years: points beyond are not told.
HORIZON_DAYS = 3653
KEEP_AN_EYE_DAYS, KEEP_AN_EYE_CHANCE = 180, 0.25

SinceHow = Literal["first_use", "told", "seen", "unknown"]


@dataclass(frozen=True)
class DueCurve:
    """The chance of being due, as days counted from `as_of`.

    `already` is the chance on the day itself; `days` are those at which each of `CURVE_CHANCES` is reached, infinite
    where it never is. In between the chance is read along straight lines; it never falls.
    """

    already: float
    days: tuple[float, ...]

    def chance(self, days: float) -> float:
        """The chance of being due within so many days; 0 before the first."""
        if days < 0:
            return 0.0
        right = bisect_right(self.days, days)
        if right == len(self.days):
            return 1.0
        day_before = self.days[right - 1] if right else 0.0
        before = max(CURVE_CHANCES[right - 1], self.already) if right else self.already
        if math.isinf(self.days[right]) or self.days[right] <= day_before:
            return before
        share = (days - day_before) / (self.days[right] - day_before)
        return before + share * max(CURVE_CHANCES[right] - before, 0.0)

    def quantile(self, chance: float) -> float:
        """Days until an item is due with that chance; infinite where it never is."""
        if chance <= self.already:
            return 0.0
        right = bisect_left(CURVE_CHANCES, chance)
        if right == len(CURVE_CHANCES):
            return self.days[-1]
        if CURVE_CHANCES[right] == chance or right == 0 or math.isinf(self.days[right]):
            return self.days[right]
        left = right - 1
        share = (chance - CURVE_CHANCES[left]) / (CURVE_CHANCES[right] - CURVE_CHANCES[left])
        return self.days[left] + share * (self.days[right] - self.days[left])

    def dots(self) -> tuple[float, ...]:
        """Twenty equally likely days (infinite: no date), for the due chart."""
        return tuple(self.quantile(chance) for chance in DOTS)

    def to_json(self) -> dict[str, Any]:
        """As plain JSON; days to a tenth, null where never."""
        kept = [None if math.isinf(day) else round(day, 1) for day in self.days]
        return {"already": round(self.already, 6), "days": kept}

    @staticmethod
    def from_json(kept: Mapping[str, Any]) -> DueCurve:
        """What `to_json` made."""
        days = kept["days"]
        # Planning makes thousands of them at a time, and few have a day that is never reached.
        return DueCurve(
            kept["already"], tuple([math.inf if day is None else day for day in days] if None in days else days)
        )

    @staticmethod
    def certain(day: float) -> DueCurve:
        """Due on that day (0 or before: now; infinite: never)."""
        return DueCurve(1.0 if day <= 0 else 0.0, (max(day, 0.0),) * len(CURVE_CHANCES))


@dataclass(frozen=True)
class Because:
    """What a forecast rests on; `unit` is that of `wear_per_1000`, `distance_per_day` is in miles."""

    wear_per_1000: float | None
    unit: str | None
    distance_per_day: float | None
    readings_used: int
    since_on: date | None
    since_how: SinceHow
    model: str


@dataclass(frozen=True)
class DueWindow:
    """When one item of one car is due, as seen from `as_of`; `now` is the value by then, or the word that was entered.

    `early`, `likely`, `late` are the dates of 10, 50 and 90 % chance, None past the horizon. `is_past` where the item
    was measured at its limit, or found due by its looks: a measurement, no forecast. `ahead` is what the window rests
    on where the item wears by distance and was asked for, so that the next reading can score it. `stored_set` names a
    labelled set of tires that was not the one seen on last. `evidence` is what pages show of its reasons, where it was
    asked for. `near` is the curve of being so near the limit that a visit does the work (`Item.near`), where asked for.
    """

    vehicle: str
    item: str
    position: str
    as_of: date
    limit: Limit | None
    now: float | str | None
    early: date | None
    likely: date | None
    late: date | None
    curve: DueCurve
    chances: tuple[tuple[int, float], ...]
    beyond_horizon: float
    because: Because
    is_past: bool = False
    quantiles: tuple[tuple[float, float | None], ...] = ()
    ahead: ValueAhead | None = None
    stored_set: str | None = None
    evidence: Evidence | None = None
    near: DueCurve | None = None

    def chance_due_within(self, days: float) -> float:
        """The chance of being due within so many days after `as_of`."""
        return self.curve.chance(days)

    def chance_due_by(self, on: date) -> float:
        """The chance of being due by that date; 0 before `as_of`."""
        return self.curve.chance((on - self.as_of).days)

    def condition(self, lead_days: int, send_at_chance: float, on: date | None = None) -> Condition:
        """The condition in one word, as of `on` (`as_of` unless said).

        Due now: at the limit, or as likely as not; due soon: the chance within the lead time reaches the shop's;
        keep an eye on it: one in four within half a year.
        """
        on = on or self.as_of
        if self.is_past or self.chance_due_by(on) >= 0.5:
            return "due now"
        if self.chance_due_by(on + timedelta(days=lead_days)) >= send_at_chance:
            return "due soon"
        if self.chance_due_by(on + timedelta(days=KEEP_AN_EYE_DAYS)) >= KEEP_AN_EYE_CHANCE:
            return "keep an eye on it"
        return "fine"

    def to_json(self) -> dict[str, Any]:
        """As plain JSON, for keeping; `from_json` makes the same window of it, days rounded to a tenth."""
        kept = {name: value for name, value in vars(self).items() if name not in _NESTED}
        kept |= {name: None if kept[name] is None else kept[name].isoformat() for name in _DAYS}
        since = self.because.since_on
        because = vars(self.because) | {"since_on": None if since is None else since.isoformat()}
        limit = None if self.limit is None else dict(vars(self.limit))
        ahead = None if self.ahead is None else self.ahead.to_json()
        kept |= {"limit": limit, "because": because, "curve": self.curve.to_json(), "ahead": ahead}
        kept |= {} if self.near is None else {"near": self.near.to_json()}
        return kept if self.evidence is None else kept | {"evidence": self.evidence.to_json()}

    @staticmethod
    def from_json(kept: Mapping[str, Any]) -> DueWindow:
        """What `to_json` made."""
        since = kept["because"]["since_on"]
        told = dict(kept) | {name: _day(kept[name]) for name in _DAYS}
        told["because"] = Because(**(kept["because"] | {"since_on": _day(since)}))
        told["limit"] = None if kept["limit"] is None else Limit(**kept["limit"])
        told["curve"] = DueCurve.from_json(kept["curve"])
        told["chances"] = tuple((int(days), chance) for days, chance in kept["chances"])
        ahead = kept.get("ahead")
        told["ahead"] = None if ahead is None else ValueAhead.from_json(ahead)
        near, evidence = kept.get("near"), kept.get("evidence")
        told["near"] = None if near is None else DueCurve.from_json(near)
        told["evidence"] = None if evidence is None else Evidence.from_json(evidence)
        told["quantiles"] = tuple((chance, days) for chance, days in kept["quantiles"])
        return DueWindow(**told)


_DAYS = ("as_of", "early", "likely", "late")
_NESTED = ("limit", "because", "curve", "ahead", "evidence", "near")


def _day(text: str | None) -> date | None:
    return None if text is None else date.fromisoformat(text)


def condition_of(window: DueWindow | None, lead_days: int, send_at_chance: float, on: date | None = None) -> Condition:
    """The condition of an item that may have no window because nobody has measured it yet."""
    return "not checked" if window is None else window.condition(lead_days, send_at_chance, on)
