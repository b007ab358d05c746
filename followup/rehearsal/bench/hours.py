"""`followup bench hours`: what the learned hour brings, with invented customers whose own hours are known.

Each customer looks at the phone much in two hours of the day and little in the others; those hours are drawn around
noon, after work or in the evening. A text is answered by a rate that is the product of that and of how long ago it
left; most of what is answered at all is answered within hours. A shop invites them for two years, the first of them at
the usual hour for all. Three shops have the same customers and the same luck: one keeps the usual hour, one lets hours
be learned by `core/planning` as it is shipped, and one knows each customer's hours.
"""

from __future__ import annotations

import random
from collections import defaultdict
from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from statistics import mean, median
from zoneinfo import ZoneInfo

from followup.core.planning.answer_hours import (
    HOURS,
    QUICK_HOURS,
    AnswerCurve,
    AnswerHabit,
    Heard,
    learn_curve,
    learn_habit,
    quick_chance,
)
from followup.core.planning.best_hour import HourPicture, How, leaving, slots_of
from followup.core.planning.hours import Where, may_leave
from followup.core.shop import Shop, ShopRules
from followup.rehearsal.bench.figures import Figure, at_least, at_most, beside

ZONE = "America/Chicago"
WHERE = Where((ZONE,))
BEGIN = datetime(2026, 1, 5, 6, 0, tzinfo=UTC)
WEEKS, USUAL_WEEKS, EVERY_WEEKS = 104, 52, 8
# Answers an hour of somebody who looks at the phone as usual, by hours since the text left (an assumption).
_RATES = ((1.0, 0.10), (3.0, 0.05), (8.0, 0.02), (24.0, 0.008))
_PEAK, _ELSE = 5.0, 0.55
_SHARES_OF_HOURS = (((11, 12), 0.2), ((16, 17), 0.5), ((19, 20), 0.3))
# Where customers have no hours of their own, chasing some must not cost answers.
QUICK_MORE_AT_LEAST, NO_WORSE_AT_LEAST = 1.15, 0.95
# The planner's tick, each six hours.
_TICKS_AT_HOURS = (0, 6, 12, 18)


@dataclass(frozen=True)
class Asked:
    """How many customers a shop has, and the seed of the first of three shops."""

    customers: int
    seed: int

    @property
    def steps(self) -> int:
        """How many shops are lived through in all."""
        return 3 * (len(WAYS) + 2)


WAYS = ("usual", "learned", "known")


@dataclass(frozen=True)
class Lived:
    """The texts of the second year: how each hour was chosen, hours to its answer (None: not within a day); how many
    texts left outside the allowed hours; and the most texts in one hour."""

    took: tuple[tuple[How | None, float | None], ...]
    out_of_hours: int

    def quick(self, *ways: How | None) -> float:
        """The share of the texts (of those ways; all, where none is given) that were answered quickly."""
        those = [hours for way, hours in self.took if not ways or way in ways]
        return mean(hours is not None and hours <= QUICK_HOURS for hours in those)

    @property
    def median_hours(self) -> float:
        """Median hours to the answers that came."""
        return median(hours for _, hours in self.took if hours is not None)


def bench_hours(asked: Asked, progress: Callable[[int], object]) -> list[Figure]:
    """The whole table."""
    shops: dict[str, list[Lived]] = defaultdict(list)
    alike: dict[str, list[Lived]] = defaultdict(list)
    for number in range(3):
        for way in WAYS:
            shops[way].append(live(way, asked.customers, asked.seed + number))
            progress(1)
        for way in ("usual", "learned"):
            alike[way].append(live(way, asked.customers, asked.seed + number, peak=1.0))
            progress(1)
    usual, learned, known = (mean(one.quick() for one in shops[way]) for way in WAYS)
    hours = [mean(one.median_hours for one in shops[way]) for way in WAYS]
    return [
        beside("usual hour: answered within 3 hours, of 100 texts", 100 * usual),
        beside("learned hour: the same", 100 * learned),
        beside("each customer's hours known: the same", 100 * known),
        at_least("learned beside usual", learned / usual, QUICK_MORE_AT_LEAST, 2),
        beside("of what knowing them would bring", (learned - usual) / (known - usual), 2),
        at_least(
            "customers without hours of their own: learned beside usual",
            mean(one.quick() for one in alike["learned"]) / mean(one.quick() for one in alike["usual"]),
            NO_WORSE_AT_LEAST,
            2,
        ),
        beside("usual hour: median hours to an answer", hours[0]),
        beside("learned hour: the same", hours[1]),
        beside("each customer's hours known: the same", hours[2]),
        at_most("texts outside the allowed hours", sum(one.out_of_hours for one in shops["learned"]), 0, 0),
    ]


def live(way: str, customers: int, seed: int, peak: float = _PEAK) -> Lived:
    """Two years of one shop, of which the second is told; `peak`: how much more a customer looks at the phone in hours
    of their own (1: there are none)."""
    luck = random.Random(seed)
    looks = [_looks(luck, peak) for _ in range(customers)]
    rules = ShopRules(learns_hours=way == "learned")
    shop = Shop(1, "Elm Street Garage", ZONE, "+13125550100", "+13125550101", state="IL", rules=rules)
    heard: dict[int, list[Heard]] = defaultdict(list)
    took: list[tuple[How | None, float | None]] = []
    out_of_hours, curve, load = 0, learn_curve((), ZONE), defaultdict[datetime, int](int)
    for week in range(WEEKS):
        is_told = week >= USUAL_WEEKS
        if is_told:
            curve = learn_curve((one for found in heard.values() for one in found), ZONE)
        for number in range(week % EVERY_WEEKS, customers, EVERY_WEEKS):
            # Drawn alike for every way, whatever the others did before.
            own = random.Random(f"{seed} {week} {number}")
            now = BEGIN + timedelta(weeks=week, days=own.randrange(5), hours=own.choice(_TICKS_AT_HOURS))
            at, how = _leaves(way if is_told else "usual", shop, now, curve, heard[number], load, looks[number], own)
            out_of_hours += not may_leave("invite", at, shop, WHERE).may
            hours = _answered_after(at, looks[number], own)
            answered_at = None if hours is None else at + timedelta(hours=hours)
            heard[number].append(Heard(number, at, answered_at))
            if is_told:
                took.append((how, hours))
    return Lived(tuple(took), out_of_hours)


def _leaves(
    way: str, shop: Shop, now: datetime, curve: AnswerCurve, own_heard: list[Heard], load: dict[datetime, int],
    looks: list[float], own: random.Random,
) -> tuple[datetime, How | None]:  # fmt: skip
    hour = HourPicture(learn_habit(curve, own_heard, ZONE), load) if way == "learned" else None
    found = leaving("invite", now, shop, WHERE, hour, own.random(), own.random(), own.random())
    assert found is not None
    if way != "known":
        return found.at, found.how
    known = AnswerHabit(
        AnswerCurve(tuple(looks), tuple(rate for _, rate in _RATES), (0,) * HOURS, 0, 0),
    )
    slots = slots_of("invite", found.at, shop, WHERE)
    if not slots:
        return found.at, None
    best = max(slots, key=lambda one: quick_chance(known, one[0].astimezone(ZoneInfo(ZONE)).hour + 0.5))
    return best[0] + (best[1] - best[0]) / 2, None


def _looks(luck: random.Random, peak: float) -> list[float]:
    hours = luck.choices([one for one, _ in _SHARES_OF_HOURS], [share for _, share in _SHARES_OF_HOURS])[0]
    looks = [(peak if hour in hours else _ELSE) if peak > 1 else 1.0 for hour in range(HOURS)]
    return [0.1 * each if hour < 7 or hour > 22 else each for hour, each in enumerate(looks)]


def _answered_after(left_at: datetime, looks: list[float], luck: random.Random) -> float | None:
    """Hours to the answer: drawn in steps of five minutes, so that luck is spent alike."""
    local = left_at.astimezone(ZoneInfo(ZONE))
    wall, needed, at = local.hour + local.minute / 60, luck.expovariate(1.0), 0.0
    while at < _RATES[-1][0]:
        rate = next(rate for until, rate in _RATES if at < until)
        needed -= rate * looks[int(wall + at) % HOURS] / 12
        at += 1 / 12
        if needed <= 0:
            return at
    return None
