"""The customers of a simulated shop: who answers what, after how long, and who writes without being asked.

Everything is drawn from the seed and the number, so that the same customer does the same whatever others do.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from random import Random

from followup.rehearsal.week.phones import words_of

# What is meant by an answer to each question of the program, in parts; "" is no answer at all.
ANSWERS: Mapping[str, Mapping[str, int]] = {
    "visit": {
        "yes_time": 34, "yes": 9, "no": 8, "later": 6, "done": 3, "price": 6, "duration": 3, "explain": 3,
        "judgment": 2, "call": 3, "stop": 4, "stranger": 1, "gone": 1, "symptom_today": 2, "symptom_now": 1, "": 20,
    },
    "day": {"yes_time": 70, "no": 5, "price": 5, "call": 3, "": 17},
    "time": {"yes_time": 75, "": 15, "call": 5, "price": 5},
    "slot": {"slot": 60, "other_slot": 20, "no": 5, "": 15},
    "confirm": {"confirm": 65, "move": 8, "cancel": 5, "late": 3, "": 19},
    "odometer": {"odometer": 70, "no": 5, "": 25},
    "car": {"slot": 70, "": 30},
    "walk_in": {"walk_in": 30, "thanks": 20, "stop": 3, "": 47},
    "after_visit": {"fine": 55, "complaint": 6, "symptom_today": 3, "": 36},
    "confirm_stop": {"yes_stop": 45, "no_stop": 35, "": 20},
}  # fmt: skip
UNASKED: Mapping[str, int] = {
    "symptom_now": 8, "symptom_today": 14, "price": 20, "where": 15, "call": 8, "stop": 10, "help": 4, "yes_time": 15,
    "complaint": 3, "cancel": 3,
}  # fmt: skip
# A customer who wrote so often on one day has said what there was to say.
MOST_A_DAY = 5


@dataclass(frozen=True)
class Habits:
    """How a customer is: the share of questions that get an answer, and how often a day something else is written."""

    answers: float = 0.85
    unasked_a_day: float = 0.03
    minutes_to_answer: float = 25.0


@dataclass
class Customer:
    """One phone and whoever holds it. `miles` is what the odometer of the car shows."""

    number: str
    language: str
    miles: float
    random: Random
    habits: Habits = field(default_factory=Habits)
    has_stopped: bool = False
    wrote_at: list[datetime] = field(default_factory=list)

    def answer_to(self, asks: str | None, offered: int, at: datetime) -> tuple[datetime, str, str] | None:
        """When, what is meant and in which words the customer answers a text that asks that; None: not at all."""
        if self._has_said_enough(at):
            return None
        if asks is None:
            meant = "thanks" if self.random.random() < 0.06 else ""
        elif self.random.random() > self.habits.answers:
            meant = ""
        else:
            meant = _drawn(ANSWERS[asks], self.random)
        return self._write(meant, at + self._delay(), offered) if meant else None

    def unasked(self, day_begins_at: datetime) -> tuple[datetime, str, str] | None:
        """What the customer writes on that day without being asked, if anything."""
        if self.random.random() >= self.habits.unasked_a_day:
            return None
        at = day_begins_at + timedelta(seconds=self.random.uniform(6, 23) * 3600)
        meant = "start" if self.has_stopped and self.random.random() < 0.5 else _drawn(UNASKED, self.random)
        return self._write(meant, at, 3)

    def _write(self, meant: str, at: datetime, offered: int) -> tuple[datetime, str, str]:
        if meant in ("stop", "start"):
            self.has_stopped = meant == "stop"
        self.wrote_at.append(at)
        return at, meant, words_of(meant, self.language, self.random, miles=self.miles, slots=offered)

    def _delay(self) -> timedelta:
        """Mostly minutes, at times the next day."""
        minutes = self.random.lognormvariate(0.0, 1.3) * self.habits.minutes_to_answer
        return timedelta(minutes=min(max(minutes, 0.3), 60 * 40))

    def _has_said_enough(self, at: datetime) -> bool:
        return sum(at - timedelta(days=1) < one for one in self.wrote_at) >= MOST_A_DAY


def _drawn(parts: Mapping[str, int], random: Random) -> str:
    return random.choices(list(parts), list(parts.values()))[0]
