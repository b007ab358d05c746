"""Do forecasts still hold as often as they say? A test that may be looked at every day.

The evidence is a betting score (a test martingale): it begins at 1 and, while the forecasts are good enough, is not
expected to grow, whoever looks however often. By Ville's inequality it ever reaches 20 with a chance of at most 1 in 20
(Ville 1939; Waudby-Smith & Ramdas 2024, "Estimating means of bounded random variables by betting"). Good enough is a
range, not a point: a model that is a little too narrow is not called out, however many readings there are.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Literal

import numpy as np

from followup.core.forecast.season import Array

# The share of 80 % windows that hold, and the mean place of a reading: what is good enough (settled by design).
GOOD_SHARE = (0.74, 0.86)
GOOD_PLACE = (0.42, 0.58)
# Reached by chance in at most one shop in twenty, ever.
ALARM_AT = 20.0
# Shares of the largest bet that cannot lose everything.
_BETS = np.array([0.05, 0.1, 0.2, 0.4, 0.7])

# Evidence is not gathered without end, so that it goes once forecasts are good again; giving some away is allowed.
_MOST = 1e6

Direction = Literal["too_few", "too_many", "more_worn", "less_worn"]


@dataclass(frozen=True)
class Drift:
    """Forecasts are no longer good enough, in this direction, since about that day; `evidence` is 20 or more."""

    direction: Direction
    since_on: date
    evidence: float


def evidence_outside(values: Array, good: tuple[float, float]) -> Array:
    """Evidence after each of `values` (in [0, 1], in the order of time) that their mean lies outside `good`.

    Bets on both sides, of several sizes, begun at every point of time with weights 1/(j (j + 1)): what went well for
    years does not hide what goes wrong now.
    """
    return _bets(values, good)[0]


def _bets(values: Array, good: tuple[float, float]) -> tuple[Array, Array]:
    """Evidence after each value, and the two sides' share of it (too low, too high)."""
    low, high = good
    sizes = np.concatenate([_BETS / (1 - low), _BETS / high])
    sign = np.concatenate([-np.ones(len(_BETS)), np.ones(len(_BETS))])
    mark = np.concatenate([np.full(len(_BETS), low), np.full(len(_BETS), high)])
    capital = np.zeros(len(sizes))
    after = [capital]
    for number, value in enumerate(np.asarray(values, dtype=float).tolist(), start=1):
        capital = np.minimum((capital + 1 / (number * (number + 1))) * (1 + sizes * sign * (value - mark)), _MOST)
        after.append(capital)
    each = np.stack(after)[1:].reshape(-1, 2, len(_BETS))
    # What was not bet yet lies aside.
    aside = 1 / np.arange(2.0, len(each) + 2)
    return each.mean(axis=(1, 2)) + aside, each.sum(axis=2)


def find_drift(days: Sequence[date], held: Array, places: Array) -> Drift | None:
    """Whether the last of these visits speaks of drift; None while forecasts are good enough.

    A visit of one car is one entry, in the order of time: `held` is the share of its 80 % windows that held, `places`
    the mean place of its readings, so that what hangs together counts once.
    """
    if not len(days):
        return None
    found = [_bets(held, GOOD_SHARE), _bets(places, GOOD_PLACE)]
    evidence = [float(one[0][-1]) for one in found]
    if sum(evidence) / 2 < ALARM_AT:
        return None
    # A bias also lets fewer windows hold: where it is clear by itself, it is what is told.
    worse = int(evidence[1] >= ALARM_AT or evidence[1] > evidence[0])
    is_high = bool(found[worse][1][-1][1] > found[worse][1][-1][0])
    direction: Direction = (("too_few", "too_many"), ("more_worn", "less_worn"))[worse][is_high]
    values, good = ((held, GOOD_SHARE), (places, GOOD_PLACE))[worse]
    return Drift(direction, days[_begin(np.asarray(values, dtype=float), good[is_high], is_high)], sum(evidence) / 2)


def _begin(values: Array, mark: float, is_high: bool) -> int:
    """Where the sum of what lies beyond the mark began to rise to what it is now (a cumulative sum's argument)."""
    beyond = np.cumsum(values - mark if is_high else mark - values)
    return int(np.argmin(np.concatenate([[0.0], beyond[:-1]])))
