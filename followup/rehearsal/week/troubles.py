"""What goes wrong in a week, drawn from a seed: the provider is away, the server is down, its clock is wrong, the
worker is killed while it sends."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta
from random import Random

from followup.points import BETWEEN, IN_A_TRANSACTION

PROVIDER_AWAY_FOR = timedelta(hours=6)
SERVER_DOWN_FOR = timedelta(hours=3)
_DAY = timedelta(days=1)


@dataclass(frozen=True)
class Span:
    """From an instant up to another, in true time."""

    from_at: datetime
    to_at: datetime

    def holds(self, at: datetime) -> bool:
        """Whether the instant lies in it."""
        return self.from_at <= at < self.to_at


@dataclass(frozen=True)
class Kill:
    """The worker ends at the `nth` time that it comes to a point, from that instant on."""

    at: datetime
    point: str
    nth: int


@dataclass(frozen=True)
class Troubles:
    """`provider_refuses`: connections are refused while it is away, else every answer is 503. `hooks_alone`: only the
    pages are down, the worker goes on. `posted_twice` is the share of texts that a hook gets again.

    `later` are those of other weeks.
    """

    provider_away: Span | None = None
    provider_refuses: bool = True
    server_down: Span | None = None
    hooks_alone: bool = False
    clock_wrong: Span | None = None
    clock_wrong_by: timedelta = timedelta(0)
    kills: tuple[Kill, ...] = ()
    posted_twice: float = 0.0
    list_lags: float = 0.0
    later: tuple[Troubles, ...] = ()

    @property
    def each(self) -> tuple[Troubles, ...]:
        """These, and those of other weeks."""
        return (self, *self.later)

    def in_words(self) -> str:
        """What happens, for a line."""
        told = []
        if self.provider_away:
            how = "refuses" if self.provider_refuses else "answers 503"
            told.append(f"provider {how} {_span(self.provider_away)}")
        if self.server_down:
            told.append(f"{'hooks' if self.hooks_alone else 'server'} down {_span(self.server_down)}")
        if self.clock_wrong:
            told.append(f"clock {self.clock_wrong_by.total_seconds() / 3600:+.0f} h {_span(self.clock_wrong)}")
        told += [f"killed at {one.point}" for one in self.kills]
        return ", ".join(told) or "no troubles"


def drawn_troubles(seed: int, begins_at: datetime, days: int = 7) -> Troubles:
    """One of each kind, at any hour of those days, mostly of working hours; two kills."""
    random = Random(f"troubles {seed}")

    def instant() -> datetime:
        # The week begins in the morning: most of what happens is within the working hours that follow.
        hours = random.uniform(0, 11) if random.random() < 0.75 else random.uniform(0, 24)
        return begins_at + _DAY * random.randrange(days) + timedelta(hours=min(hours, 24 * days - 8))

    away, down, wrong = instant(), instant(), instant()
    points = [*IN_A_TRANSACTION, *BETWEEN]
    # Every point in turn, so that few weeks see them all.
    kills = (Kill(instant(), points[seed % len(points)], random.randint(1, 3)),
             Kill(instant(), random.choice(points), random.randint(1, 3)))  # fmt: skip
    return Troubles(
        provider_away=Span(away, away + PROVIDER_AWAY_FOR), provider_refuses=random.random() < 0.5,
        server_down=Span(down, down + SERVER_DOWN_FOR), hooks_alone=random.random() < 0.4,
        clock_wrong=Span(wrong, wrong + timedelta(hours=random.uniform(1, 5))),
        clock_wrong_by=timedelta(hours=random.choice((-1, 1))), kills=kills, posted_twice=0.15, list_lags=0.2,
    )  # fmt: skip


def _span(span: Span) -> str:
    return f"{span.from_at:%a %H:%M}-{span.to_at:%H:%M}"
