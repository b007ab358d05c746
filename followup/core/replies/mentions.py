"""What the grammar finds in a text: days, hours and parts of a day, each with its place."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date, datetime

from followup.core.replies.opening import OpeningHours
from followup.core.replies.symbols import Symbol


@dataclass(frozen=True)
class Days:
    """Days that a text names: each of `days` on its own, or the span from the first to the last (`is_span`)."""

    days: tuple[date, ...]
    is_span: bool = False
    is_later: bool = False
    """Names when to ask again (a month, a season, `until`), not when to come; no days: it cannot be told."""
    weekday: int | None = None
    """Set for a bare weekday, which a week named beside it moves."""
    week: date | None = None
    """The Monday of a whole week that is named."""
    part: str | None = None
    disagrees: bool = False
    """A weekday and a date that do not belong together: `days` holds both."""
    is_impossible: bool = False
    is_open_days: bool = False
    """Only the open ones of `days` are meant (a weekend)."""
    month: date | None = None
    """The first of the month that was named, for a day of the month that follows."""
    bound: str = ""
    """`after` or `before` where the span came from such a word; the named day is in `anchor`."""
    anchor: date | None = None
    is_up_to: bool = False
    """The named day itself belongs to the span (`by Friday`)."""


@dataclass(frozen=True)
class Hour:
    """A clock time as said: `half` is am or pm where that was told, None where it fits both half-days."""

    hour: int
    minute: int = 0
    half: str | None = None
    is_plain: bool = True
    """Whether something beside the bare number shows that it is a clock time."""

    def minutes(self) -> tuple[int, ...]:
        """The minutes of the day that it can mean; a bare twelve is noon, for midnight is called by its name."""
        if self.hour > 12 or self.hour == 0:
            return (self.hour * 60 + self.minute,)
        base = self.hour % 12 * 60 + self.minute
        if self.hour == 12 and not self.half:
            return (base + 720,)
        return {"am": (base,), "pm": (base + 720,)}.get(self.half or "", (base, base + 720))


@dataclass(frozen=True)
class Hours:
    """A time of the day: `at`, `after`, `before`, `by`, `around` one hour, or `between` two."""

    kind: str
    first: Hour
    last: Hour | None = None


@dataclass(frozen=True)
class PartOfDay:
    """A named part of the day."""

    name: str


@dataclass(frozen=True)
class Instant:
    """A time told from now (`in 2 hours`)."""

    at: datetime


@dataclass(frozen=True)
class Mention:
    """One thing found, with its span in symbols."""

    value: Days | Hours | PartOfDay | Instant
    start: int
    end: int


@dataclass(frozen=True)
class Setting:
    """What the grammar knows beside the text."""

    now: datetime
    order: str
    language: str
    asked: str | None
    hours: OpeningHours
    has_offer: bool = False


_PAST_THE_END = 16
"""How far past the last symbol a rule may look."""


@dataclass
class Text:
    """The symbols of one text, looked at by place; past the end everything is empty."""

    symbols: list[Symbol]
    setting: Setting
    plain: str
    month: date | None = field(default=None)
    """The month named last, for days of the month that follow it."""
    has_plain_hour: bool = False
    """Whether an hour that is surely one was found, so that a bare number after it is something else."""

    def __post_init__(self) -> None:
        """Lay out what is asked for most, with an empty end before and after."""
        self._cats = ["", *(symbol.category for symbol in self.symbols), *[""] * _PAST_THE_END]
        self._words = ["", *(symbol.text for symbol in self.symbols), *[""] * _PAST_THE_END]

    def cat(self, at: int) -> str:
        """The category of the symbol at this place."""
        return self._cats[at + 1] if at >= -1 else ""

    def word(self, at: int) -> str:
        """The text of the symbol at this place."""
        return self._words[at + 1] if at >= -1 else ""

    def value(self, at: int) -> int:
        """The number of the symbol at this place, 0 where it has none."""
        value = self.symbols[at].value if 0 <= at < len(self.symbols) else 0
        return value if isinstance(value, int) else 0

    def name(self, at: int) -> str:
        """The named value of the symbol at this place."""
        return str(self.symbols[at].value) if 0 <= at < len(self.symbols) else ""

    @property
    def today(self) -> date:
        """The day on which the text came."""
        return self.setting.now.date()

    def skip(self, at: int, *categories: str) -> int:
        """The first place from `at` on whose category is none of these."""
        cats = self._cats
        while cats[at + 1] in categories:
            at += 1
        return at
