"""Lays out the due chart: one axis of dates, twenty dots an item, a mark for each planned text and booking.

Each dot is one chance in twenty that the item is due by its date: the 2.5, 7.5 ... 97.5 per cent dates. Counting dots
beats reading bands for everyday decisions (Kay et al., CHI 2016; Fernandes et al., CHI 2018; both from memory).
Across, everything is in per cent of the width, so that the picture fits a phone as well as a desk; down, in pixels.
Pure: dates in, places out. `templates/due_chart.html` draws it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Literal

DOTS = 20
# At 320 px of width a dot of 7 px and a little air are 2.5 per cent.
DOT_PERCENT = 2.5
PITCH_PX = 9
HIGHEST_STACK = 7
LABEL_PX = 24
TICK_PX = 24
LANE_PX = 20
LANES = 3
# A mark is 16 px wide; on a phone that is 5 per cent.
MARK_PERCENT = 6.0
ROW_GAP_PX = 12
FOOT_PX = 6
LEFT_PERCENT, RIGHT_PERCENT = 2.0, 98.0
MOST_TICKS = 5
# Words that begin farther to the right would leave a narrow picture.
LAST_LABEL_PERCENT = 84.0
# Months from tick to tick, the first that gives few enough.
STEPS = (1, 2, 3, 6, 12, 24)
MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")

MarkKind = Literal["text", "booking"]


@dataclass(frozen=True)
class DueDots:
    """One item: `label` as it stands on the page, twenty dates in order; None = past the forecast's horizon.

    `early_on`, `likely_on`, `late_on` are the due window's three dates, for the table beside the picture.
    """

    label: str
    dates: tuple[date | None, ...]
    early_on: date | None = None
    likely_on: date | None = None
    late_on: date | None = None


@dataclass(frozen=True)
class DueMark:
    """A planned text or a booking on its day; `words` say what it is."""

    on: date
    kind: MarkKind
    words: str


@dataclass(frozen=True)
class Dot:
    """A circle's middle: across in per cent, down in pixels."""

    x: float
    y: float


@dataclass(frozen=True)
class ChartRow:
    """An item's place: its label, its line, its dots; how many of the twenty lie past the end of the axis."""

    item: DueDots
    label_y: float
    base_y: float
    dots: tuple[Dot, ...]
    later: int


@dataclass(frozen=True)
class ChartMark:
    """A mark's place and its number in the list below the picture."""

    mark: DueMark
    number: int
    x: float
    y: float


@dataclass(frozen=True)
class Tick:
    """The first of a month on the axis; `has_room` for its words."""

    x: float
    words: str
    has_room: bool


@dataclass(frozen=True)
class DueChart:
    """Everything that the template draws."""

    rows: tuple[ChartRow, ...]
    marks: tuple[ChartMark, ...]
    ticks: tuple[Tick, ...]
    today_x: float
    height: float
    begins_on: date
    ends_on: date


def lay_out(items: Sequence[DueDots], marks: Sequence[DueMark], today: date, horizon_months: int = 30) -> DueChart:
    """Place everything. The axis runs from the month of the first date to the month after the last that counts.

    `horizon_months`: nothing farther ahead than this is drawn; it is counted as "later". Raises ValueError where an
    item has not twenty dates.
    """
    for item in items:
        if len(item.dates) != DOTS:
            raise ValueError(f"{item.label}: {len(item.dates)} dates in place of {DOTS}")
    furthest = _month(today, horizon_months)
    known = [on for item in items for on in item.dates if on is not None and on < furthest]
    known += [mark.on for mark in marks if mark.on < furthest]
    begins_on = max(_month(min([today, *known]), 0), _month(today, -12))
    ends_on = max(_month(max([today, *known]), 1), _month(today, 4))
    axis = _Axis(begins_on, ends_on)
    placed = _marks([mark for mark in marks if mark.on < ends_on], axis)
    head = TICK_PX + max((mark.y - TICK_PX + LANE_PX for mark in placed), default=0.0)
    rows, height = _rows(items, axis, head)
    return DueChart(rows, placed, axis.ticks(), axis.x(today), height, begins_on, ends_on)


@dataclass(frozen=True)
class _Axis:
    begins_on: date
    ends_on: date

    def x(self, on: date) -> float:
        """Per cent of the width; what lies outside stands at the edge."""
        share = (on - self.begins_on).days / (self.ends_on - self.begins_on).days
        return LEFT_PERCENT + min(max(share, 0.0), 1.0) * (RIGHT_PERCENT - LEFT_PERCENT)

    def ticks(self) -> tuple[Tick, ...]:
        months = (self.ends_on.year - self.begins_on.year) * 12 + self.ends_on.month - self.begins_on.month
        step = next((step for step in STEPS if months / step <= MOST_TICKS), STEPS[-1])
        firsts = [_month(self.begins_on, n) for n in range(months)]
        return tuple(
            Tick(self.x(first), f"{MONTHS[first.month - 1]} {first.year}", self.x(first) <= LAST_LABEL_PERCENT)
            for first in firsts
            if (first.year * 12 + first.month - 1) % step == 0
        )


def _marks(marks: Sequence[DueMark], axis: _Axis) -> tuple[ChartMark, ...]:
    """By day; one that would touch another moves down into the next lane."""
    placed: list[ChartMark] = []
    ends = [-MARK_PERCENT] * LANES
    for number, mark in enumerate(sorted(marks, key=lambda mark: mark.on), 1):
        x = axis.x(mark.on)
        lane = next((lane for lane in range(LANES) if x - ends[lane] >= MARK_PERCENT), ends.index(min(ends)))
        ends[lane] = x
        placed.append(ChartMark(mark, number, x, TICK_PX + lane * LANE_PX))
    return tuple(placed)


def _rows(items: Sequence[DueDots], axis: _Axis, y: float) -> tuple[tuple[ChartRow, ...], float]:
    rows = []
    for item in items:
        inside = [axis.x(on) for on in item.dates if on is not None and on < axis.ends_on]
        stacks = stack(inside)
        tallest = max((len(one) for _, one in stacks), default=1)
        base_y = y + LABEL_PX + tallest * PITCH_PX
        dots = tuple(Dot(x, base_y - (n + 0.5) * PITCH_PX) for x, one in stacks for n in range(len(one)))
        rows.append(ChartRow(item, y + LABEL_PX - 8, base_y, dots, DOTS - len(inside)))
        y = base_y + ROW_GAP_PX
    return tuple(rows), y + FOOT_PX


def stack(places: Sequence[float]) -> list[tuple[float, list[float]]]:
    """Put dots that would touch into one stack at their middle: (place, the places that it holds), left to right.

    Wilkinson's dot plot (1999, from memory): begin at the leftmost, take all within one dot's width. A stack that
    would become too high is split into neighbors; stacks that would touch are moved apart, and back from the edge.
    """
    groups: list[list[float]] = []
    for place in sorted(places):
        if groups and place - groups[-1][0] < DOT_PERCENT and len(groups[-1]) < HIGHEST_STACK:
            groups[-1].append(place)
        else:
            groups.append([place])
    middles = [sum(group) / len(group) for group in groups]
    for n in range(1, len(middles)):
        middles[n] = max(middles[n], middles[n - 1] + DOT_PERCENT)
    if middles and middles[-1] > RIGHT_PERCENT:
        middles[-1] = RIGHT_PERCENT
        for n in range(len(middles) - 2, -1, -1):
            middles[n] = min(middles[n], middles[n + 1] - DOT_PERCENT)
    return list(zip(middles, groups, strict=True))


def _month(on: date, later: int) -> date:
    """The first of the month that is so many months later."""
    months = on.year * 12 + on.month - 1 + later
    return date(months // 12, months % 12 + 1, 1)
