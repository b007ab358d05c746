"""When the first item of a car is due: several windows made one, without numpy, as pages read it.

The items of a car do not come due apart from each other: they are driven by the same person, over the same miles. Each
probit of a chance is a share of one normal number that the items have in common and a rest of its own (the one-factor
normal copula; Li, On Default Correlation, 2000, from memory). Given the common number the items are independent:

    P(first due by t) = sum over z of q(z) (1 - product over items of (1 - P_i(t | z)))
    P_i(t | z) = Phi((probit(P_i(t)) - sqrt(shared) z) / sqrt(1 - shared))

`first_of_several.py` does the same for many cars at once.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from statistics import NormalDist

from followup.core.forecast.window import CURVE_CHANCES, HORIZON_DAYS, DueWindow

# The share that items which go by miles have in common: .85 covered best on a simulated fleet (50.5 / 76.9 / 86.6 % of
# windows that said 50 / 80 / 90; independence 35.0 / 57.6 / 69.8). What goes by time alone has no driver in common.
SHARED_BY_MILES = 0.85
# Fifteen Gauss-Hermite nodes of the standard normal number and their weights; the negative half mirrors it.
_HALF = (
    (0.0, 0.31825951825951815),
    (0.799129068324548, 0.23246229360973225),
    (1.6067100690287297, 0.08941779539984437),
    (2.432436827009758, 0.017365774492137616),
    (3.2890824243987664, 0.001567357503549956),
    (4.1962077112690155, 5.642146405189029e-05),
    (5.190093591304781, 5.975419597920599e-07),
    (6.363947888829839, 8.589649899633252e-10),
)
NODES = (*((-at, weight) for at, weight in reversed(_HALF[1:])), *_HALF)
_NORMAL = NormalDist()
_NEARLY_NEVER, _NEARLY_SURE = 1e-9, 1 - 1e-9
# Items that are hardly due by the end of the search do not move its answer by a day.
_HARDLY = 1e-4
# Dates are days: nobody needs the search to be finer.
_CLOSE_DAYS = 0.25


@dataclass(frozen=True)
class FirstDue:
    """When the first of a car's items is due, as seen from `on`; None past the horizon.

    `item`, `position`: the one that is likeliest to be due by then.
    """

    on: date
    early: date | None
    likely: date | None
    late: date | None
    item: str
    position: str

    @property
    def is_now(self) -> bool:
        """True where something is as likely due already as not."""
        return self.likely is not None and self.likely <= self.on


def shared_of(window: DueWindow) -> float:
    """The share of its chance that an item has in common with the others of its car."""
    return 0.0 if window.because.distance_per_day is None else SHARED_BY_MILES


def chance_of_first(chances: Sequence[float], shared: Sequence[float]) -> float:
    """The chance that at least one is due, of the chance of each and the share that it has in common (under 1)."""
    if not chances or max(chances) <= _NEARLY_NEVER:
        return 0.0
    if max(chances) >= _NEARLY_SURE:
        return 1.0
    parts = [
        (_NORMAL.inv_cdf(chance), math.sqrt(share), math.sqrt(2 * (1 - share)))
        for chance, share in zip(chances, shared, strict=True)
        if chance > _NEARLY_NEVER
    ]
    none_due = 0.0
    for at, weight in NODES:
        product = weight
        for probit, pull, scale in parts:
            product *= math.erfc((probit - pull * at) / scale) / 2
        none_due += product
    # Whatever they have in common: at least as likely as the likeliest, at most as likely as all together.
    return min(max(1 - none_due, max(chances)), sum(chances), 1.0)


def first_due(windows: Sequence[DueWindow], on: date, horizon_days: int = HORIZON_DAYS) -> FirstDue | None:
    """When the first of these items of one car is due, as seen on `on`; None without any window."""
    if not windows:
        return None
    days = {chance: _days_until(windows, on, chance, horizon_days) for chance in (0.1, 0.5, 0.9)}
    by = days[0.5] if days[0.5] is not None else float(horizon_days)
    likeliest = max(windows, key=lambda one: _chance(one, on, by))
    early, likely, late = (None if it is None else on + timedelta(days=round(it)) for it in days.values())
    return FirstDue(on, early, likely, late, likeliest.item, likeliest.position)


def _chance(window: DueWindow, on: date, days: float) -> float:
    """The chance of being due within so many days after `on`."""
    passed = (on - window.as_of).days + days
    return 1.0 if window.is_past and passed >= 0 else window.chance_due_within(passed)


def _chance_of_any(windows: Sequence[DueWindow], on: date, days: float) -> float:
    return chance_of_first([_chance(one, on, days) for one in windows], [shared_of(one) for one in windows])


def _days_until(windows: Sequence[DueWindow], on: date, chance: float, horizon_days: int) -> float | None:
    """Days after `on` until the first is due with that chance; None past the horizon.

    The first is due no later than the earliest alone, and no earlier than where all of them together could be.
    """
    if _chance_of_any(windows, on, 0.0) >= chance:
        return 0.0
    alone = min(_quantile(one, on, chance) for one in windows)
    together = chance / len(windows)
    low = max(min(_quantile(one, on, together) for one in windows) - 1, 0.0) if together > CURVE_CHANCES[0] else 0.0
    high = min(alone, float(horizon_days))
    if _chance_of_any(windows, on, high) < chance and alone > horizon_days:
        return None
    near = [one for one in windows if _chance(one, on, high) > _HARDLY]
    while high - low > _CLOSE_DAYS:
        middle = (low + high) / 2
        low, high = (low, middle) if _chance_of_any(near, on, middle) >= chance else (middle, high)
    return high


def _quantile(window: DueWindow, on: date, chance: float) -> float:
    return max(window.curve.quantile(chance) - (on - window.as_of).days, 0.0)
