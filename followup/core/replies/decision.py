"""The result of understanding in the making, and what every step of it needs."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from datetime import date, datetime

from followup.core.replies.contract import Need, OdometerReading, TimeWindow


@dataclass
class Decision:
    """The result in the making; each step changes it, in the order of `combining.decide`."""

    codes: set[str]
    times: tuple[TimeWindow, ...] = ()
    avoid: tuple[TimeWindow, ...] = ()
    chosen: datetime | None = None
    until: date | None = None
    odometer: OdometerReading | None = None
    car: str | None = None
    needs: tuple[Need, ...] = ()
    question: str | None = None
    is_settled: bool = False
    """Whether nothing further is asked back."""
    without: frozenset[str] = frozenset()
    """Meanings that the text does not hold, whatever its marks suggest."""
    doubts: list[str] = field(default_factory=list)
    """Why the result may be wrong: what certainty is made of."""

    def drop(self, codes: Iterable[str]) -> None:
        """Take meanings out."""
        self.codes -= set(codes)

    def has(self, *codes: str) -> bool:
        """Whether it holds any of these meanings."""
        return not self.codes.isdisjoint(codes)

    def become(self, code: str, instead_of: Iterable[str] = ()) -> None:
        """Put a meaning in the place of others."""
        self.drop(instead_of)
        self.codes.add(code)

    def forget_times(self) -> None:
        """Take out all times and what they asked."""
        self.times, self.avoid, self.chosen, self.question = (), (), None, None
        self.drop(("propose", "choose"))
