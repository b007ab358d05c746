"""At which hours this shop's customers answer, and each of them: learned from its invites and what came back.

An invite that leaves at 10 is mostly answered soon after 10, whoever reads it: counting the hours of answers would
prove whatever hour the shop happened to use. So the rate of answers an hour is a product: of how long ago the text left
(by bins) and of the hour of the day, each estimated with the other held (iterative scaling of a Poisson model, Deming
and Stephan 1940), out of every hour in which a text lay unanswered. An hour of the day is drawn towards 1, "as any
other", by a gamma prior, and a customer's own hours towards the shop's.
"""

from __future__ import annotations

from bisect import bisect_right
from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from math import exp
from zoneinfo import ZoneInfo

HOURS = 24
# Bins of hours since the text left; what comes after a day says nothing of the hour.
AGES = (0.0, 1.0, 3.0, 8.0, 24.0)
# So many expected answers an hour of the shop, and of one customer, weigh as much as what is usual (assumptions; the
# bench `hours` shows that twice and half as much change little).
SHOP_WEIGHS, OWN_WEIGHS = 8.0, 1.5
# Habits do not end at full hours.
_SMOOTHED = (0.25, 0.5, 0.25)
_ROUNDS = 30
# An answer within so many hours is a quick one.
QUICK_HOURS = 3.0
_MINUTE, _HOUR, _DAY = timedelta(minutes=1), timedelta(hours=1), timedelta(hours=AGES[-1])
Grid = list[list[float]]


@dataclass(frozen=True)
class Heard:
    """An invite that left, and when its phone first wrote (None: not within a day). `until` where it was over before
    that: now, or a stop, which is no answer. All aware UTC."""

    phone_id: int
    left_at: datetime
    answered_at: datetime | None
    until: datetime | None = None

    @property
    def took_hours(self) -> float | None:
        """Hours to the answer, where there was one."""
        return None if self.answered_at is None else (self.answered_at - self.left_at) / _HOUR


@dataclass(frozen=True)
class AnswerCurve:
    """`by_hour` is relative (1: as any other hour of the day, shape 24), `by_age` answers an hour in each bin of
    `AGES`; `answered` how many answers each hour had; `texts` and `answers` what it rests on."""

    by_hour: tuple[float, ...]
    by_age: tuple[float, ...]
    answered: tuple[int, ...]
    texts: int
    answers: int


@dataclass(frozen=True)
class AnswerHabit:
    """The shop's curve, and how a customer differs from it: `own` is a factor for each hour, out of `own_answers`."""

    curve: AnswerCurve
    own: tuple[float, ...] = (1.0,) * HOURS
    own_answers: int = 0


def learn_curve(heard: Iterable[Heard], zone: str) -> AnswerCurve:
    """The curve of a shop whose wall clock is that of `zone`; flat where nothing was heard."""
    texts = list(heard)
    answers, waited = _tally(texts, ZoneInfo(zone))
    by_hour, by_age = [1.0] * HOURS, [0.0] * (len(AGES) - 1)
    of_hour = _smooth([sum(row) for row in answers])
    for _ in range(_ROUNDS):
        for age in range(len(by_age)):
            expected = sum(by_hour[hour] * waited[hour][age] for hour in range(HOURS))
            by_age[age] = sum(row[age] for row in answers) / expected if expected else 0.0
        by_hour = _relative(of_hour, waited, by_age, [1.0] * HOURS, SHOP_WEIGHS)
    count = tuple(round(sum(row)) for row in answers)
    return AnswerCurve(tuple(by_hour), tuple(by_age), count, len(texts), sum(count))


def learn_habit(curve: AnswerCurve, own: Iterable[Heard], zone: str) -> AnswerHabit:
    """How one customer's own answers differ from the shop's curve."""
    answers, waited = _tally(own, ZoneInfo(zone))
    of_hour = [sum(row) for row in answers]
    factors = _relative(_smooth(of_hour), waited, curve.by_age, curve.by_hour, OWN_WEIGHS)
    return AnswerHabit(curve, tuple(factors), round(sum(of_hour)))


def quick_chance(habit: AnswerHabit, wall_hour: float) -> float:
    """The chance (0-1) of an answer within `QUICK_HOURS` to a text that leaves at that wall time, in hours (17.5)."""
    rate = 0.0
    for hour, age, hours in _pieces(wall_hour, QUICK_HOURS):
        rate += habit.curve.by_age[age] * habit.curve.by_hour[hour] * habit.own[hour] * hours
    return 1.0 - exp(-rate)


def _relative(
    of_hour: Sequence[float], waited: Grid, by_age: Sequence[float], by_hour: Sequence[float], weighs: float
) -> list[float]:
    """Answers of each hour beside those expected, drawn towards 1; both are spread over the hours beside."""
    expected = _smooth([
        by_hour[hour] * sum(rate * each for rate, each in zip(by_age, waited[hour], strict=True))
        for hour in range(HOURS)
    ])  # fmt: skip
    return [(found + weighs) / (asked + weighs) for found, asked in zip(of_hour, expected, strict=True)]


def _smooth(of_hour: Sequence[float]) -> list[float]:
    before, here, after = _SMOOTHED
    return [
        before * of_hour[hour - 1] + here * of_hour[hour] + after * of_hour[(hour + 1) % HOURS] for hour in range(HOURS)
    ]


def _tally(heard: Iterable[Heard], zone: ZoneInfo) -> tuple[Grid, Grid]:
    """Answers, and hours in which a text lay unanswered, by wall hour and age: shape 24 x bins.

    Times go by the minute, and by the clock as the text left: in two nights of a year the wall hour is an hour off.
    """
    answers, waited = ([[0.0] * (len(AGES) - 1) for _ in range(HOURS)] for _ in range(2))
    # Most texts lie unanswered for the whole day, and many left in the same minute.
    lay: Counter[tuple[int, int]] = Counter()
    for one in heard:
        ends = min(at for at in (one.answered_at, one.until, one.left_at + _DAY) if at is not None)
        local = one.left_at.astimezone(zone)
        left, minutes = 60 * local.hour + local.minute, max(round((ends - one.left_at) / _MINUTE), 0)
        lay[left, minutes] += 1
        if one.answered_at == ends:
            answers[(left + minutes) // 60 % HOURS][_age_of(minutes / 60)] += 1.0
    for (left, minutes), count in lay.items():
        for hour, age, each in _pieces(left / 60, minutes / 60):
            waited[hour][age] += count * each
    return answers, waited


def _age_of(hours: float) -> int:
    return min(bisect_right(AGES, hours), len(AGES) - 1) - 1


def _pieces(wall_hour: float, hours: float) -> Iterable[tuple[int, int, float]]:
    """The time from that wall time on, cut at full hours and at the ages: (hour of the day, bin of age, hours)."""
    at, age = 0.0, 0
    while at < hours - 1e-9:
        while at >= AGES[age + 1] - 1e-9:
            age += 1
        to_full_hour = 1.0 - (wall_hour + at + 1e-9) % 1.0 + 1e-9
        each = min(to_full_hour, AGES[age + 1] - at, hours - at)
        yield int(wall_hour + at + 1e-9) % HOURS, age, each
        at += each
