"""Counts wrong tries by the address that they come from, in this process: secrets in addresses cannot be guessed at
speed. Nothing is written, since looking changes nothing."""

from __future__ import annotations

import threading
from collections import deque
from datetime import datetime, timedelta

# More addresses than that at once are an attack on the memory: the oldest are forgotten.
MOST_ADDRESSES = 10_000


class WrongTries:
    """The last wrong tries of each address."""

    def __init__(self, most: int, within_minutes: int) -> None:
        self._most, self._within = most, timedelta(minutes=within_minutes)
        self._tries: dict[str, deque[datetime]] = {}
        self._lock = threading.Lock()

    def count(self, address: str, now: datetime) -> None:
        """Write down one that was wrong."""
        with self._lock:
            tries = self._tries.pop(address, None) or deque(maxlen=self._most)
            tries.append(now)
            self._tries[address] = tries
            while len(self._tries) > MOST_ADDRESSES:
                del self._tries[next(iter(self._tries))]

    def wait(self, address: str, now: datetime) -> int:
        """For how many seconds this address is not looked at any more; 0 where it may try."""
        with self._lock:
            tries = self._tries.get(address)
            if tries is None or len(tries) < self._most:
                return 0
            left = tries[0] + self._within - now
        # A clock that was moved back makes nobody wait longer.
        return max(0, int(left.total_seconds())) if left <= self._within else 0
