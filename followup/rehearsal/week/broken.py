"""A promise that was broken."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime


@dataclass(frozen=True)
class Broken:
    """Which promise, what happened, and where there are such: the phone's number and the instant (true time)."""

    promise: str
    says: str
    number: str | None = None
    at: datetime | None = None

    @property
    def in_words(self) -> str:
        """For a line from which it can be looked up, with the seed beside it."""
        when = f"{self.at:%Y-%m-%d %H:%M:%S} UTC" if self.at else None
        return ": ".join(part for part in (self.promise, self.number, when, self.says) if part)
