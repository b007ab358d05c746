"""How customers answer: the shop's own rates, held back by what is usual until there are enough of them.

Usual: 35 % book on the first text about a reason and 20 % on the second, 1.1 visits a car-year of their own accord, and
visits in the first four weeks after a text by 35, 30, 20 and 15 % (assumptions of the design); one customer in a
hundred texts stops (common practice).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from followup.core.planning.pacing.weeks import BOOKED_ON_TRY, LANDING_SHARES

OWN_VISITS_A_YEAR = 1.1
STOPS_A_TEXT = 0.01
# What is usual counts as much as so many texts (or car-years) of the shop's own.
WEIGHT_TEXTS, WEIGHT_STOPS, WEIGHT_YEARS = 40.0, 200.0, 20.0


@dataclass(frozen=True)
class Odds:
    """Chances from 0 to 1: of a booking on the first and the second text, of a stop on any text; `own_visits_a_year` a
    car; `landing` the shares of the weeks after a text in which the visit comes."""

    booked: tuple[float, float] = (BOOKED_ON_TRY[0], BOOKED_ON_TRY[1])
    stopped: float = STOPS_A_TEXT
    own_visits_a_year: float = OWN_VISITS_A_YEAR
    landing: Sequence[float] = LANDING_SHARES


@dataclass(frozen=True)
class Counted:
    """What the shop counted: (bookings, texts) on the first and on the second text about a reason, (stops, texts), and
    (visits without a text before them, car-years)."""

    first: tuple[int, int] = (0, 0)
    second: tuple[int, int] = (0, 0)
    stops: tuple[int, int] = (0, 0)
    own: tuple[int, float] = (0, 0.0)


def odds_of(counted: Counted) -> Odds:
    """The usual rates moved towards what was counted, by how much was counted."""
    booked = [
        _between(came, texts, usual, WEIGHT_TEXTS)
        for (came, texts), usual in zip((counted.first, counted.second), BOOKED_ON_TRY, strict=True)
    ]
    return Odds(
        (booked[0], booked[1]), _between(*counted.stops, STOPS_A_TEXT, WEIGHT_STOPS),
        _between(*counted.own, OWN_VISITS_A_YEAR, WEIGHT_YEARS),
    )  # fmt: skip


def _between(count: float, of: float, usual: float, weight: float) -> float:
    return (count + usual * weight) / (of + weight)
