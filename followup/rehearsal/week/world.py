"""The time of a simulated shop, and what happens outside the program: an agenda that is stepped through.

The true time and the time that the program reads may differ: its clock can be wrong. Whoever steps names an instant of
the program's clock; the world stops before it where something happens that the program has to look at.
"""

from __future__ import annotations

import heapq
import threading
from collections.abc import Callable
from datetime import datetime, timedelta
from itertools import count

Happens = Callable[[], bool | None]
"""What happens; True where the program should look at once."""


class World:
    """Begins at a true instant; `set_clock` is told what the program's clock reads."""

    def __init__(self, begins_at: datetime, set_clock: Callable[[datetime], object]) -> None:
        self.at = begins_at
        self.wrong_by = timedelta(0)
        self._set_clock = set_clock
        self._agenda: list[tuple[datetime, int, Happens]] = []
        self._numbers = count()
        self._lock = threading.RLock()
        set_clock(begins_at)

    def now(self) -> datetime:
        """The true time."""
        return self.at

    def program_now(self) -> datetime:
        """What the program's clock reads."""
        return self.at + self.wrong_by

    def call_at(self, at: datetime, happens: Happens) -> None:
        """Put something on the agenda; what is past happens next."""
        with self._lock:
            heapq.heappush(self._agenda, (at, next(self._numbers), happens))

    def set_wrong_by(self, wrong_by: timedelta) -> None:
        """The program's clock jumps."""
        self.wrong_by = wrong_by
        self._set_clock(self.program_now())

    def pass_time(self, instant: datetime) -> None:
        """Let time go on to that instant of the program's clock, or to where it has to look before; never back."""
        with self._lock:
            target = instant - self.wrong_by
            while self._agenda and self._agenda[0][0] <= target:
                at, _, happens = heapq.heappop(self._agenda)
                self._go_to(at)
                if happens():
                    return
            self._go_to(target)

    def _go_to(self, at: datetime) -> None:
        self.at = max(self.at, at)
        self._set_clock(self.program_now())
