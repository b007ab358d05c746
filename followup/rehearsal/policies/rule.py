"""The send rule of `core/planning` on arrays: tries, spacing, caps and rests of many phones at once, week by week.

A test decides the same cases by `decide` itself. Days are any count of days; minus infinity stands for "never yet".
"""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np

from followup.core.forecast.season import Array
from followup.core.shop import ShopRules

_NEVER = -np.inf


@dataclass
class Told:
    """What each phone (rows) was told since its car's last visit, and before; each has one car.

    `tries` and `last` (rows, 2) are those of due work and of due work at its legal limit, `before` (rows,) the last
    text before the last visit, `texts` (rows, 8) the days of the last texts, `visited` the day of the last visit.
    """

    tries: np.ndarray
    last: Array
    before: Array
    texts: Array
    visited: Array
    rules: ShopRules = field(default_factory=ShopRules)

    @staticmethod
    def nobody(rows: int, rules: ShopRules) -> Told:
        """Nobody was told anything, nobody has come."""
        never = np.full(rows, _NEVER)
        texts = np.full((rows, rules.invites_a_year), _NEVER)
        return Told(
            np.zeros((rows, 2), dtype=int), np.full((rows, 2), _NEVER), never.copy(), texts, never.copy(), rules
        )

    def may_send(self, day: float, is_due: np.ndarray, is_legal: np.ndarray, is_booked: np.ndarray) -> np.ndarray:
        """Rows that are to be invited on that day. `is_legal`: due at the legal limit, which is then the reason."""
        rules, rows = self.rules, np.arange(len(is_due))
        reason = is_legal.astype(int)
        tries, last = self.tries[rows, reason], self.last[rows, reason]
        again = np.where(is_legal, rules.try_again_days_legal, rules.try_again_days)
        others = np.maximum(self.before, self.last[rows, 1 - reason])
        stopped = (
            is_booked
            | (day - self.visited < rules.rest_after_visit_days)
            | (tries >= rules.tries)
            | (day < last + again)
            | (day < others + rules.invite_every_days)
            | ((self.texts > day - 30).sum(axis=1) >= rules.invites_in_30_days)
            | ((self.texts > day - 365).sum(axis=1) >= rules.invites_a_year)
        )
        return np.asarray((is_due | is_legal) & ~stopped)

    def note_texts(self, day: float, sent: np.ndarray, is_legal: np.ndarray) -> None:
        """These rows got a text that day."""
        rows, reason = np.nonzero(sent)[0], is_legal[sent].astype(int)
        self.tries[rows, reason] += 1
        self.last[rows, reason] = day
        self.texts[rows] = np.concatenate([self.texts[rows, 1:], np.full((len(rows), 1), day)], axis=1)

    def note_visits(self, day: float, came: np.ndarray) -> None:
        """These rows came that day: what is due from now on is a new reason."""
        self.before[came] = np.maximum(self.before[came], self.last[came].max(axis=1))
        self.tries[came], self.last[came], self.visited[came] = 0, _NEVER, day

    def begin_anew(self, rows: np.ndarray) -> None:
        """What is due of these rows (a mask) is a new reason where all tries of the old one were made."""
        anew = rows & (self.tries[:, 0] >= self.rules.tries)
        self.before[anew] = np.maximum(self.before[anew], self.last[anew, 0])
        self.tries[anew, 0], self.last[anew, 0] = 0, _NEVER

    @property
    def since_visit(self) -> np.ndarray:
        """How many texts there were since the last visit, rows."""
        return np.asarray((self.texts > self.visited[:, None]).sum(axis=1))
