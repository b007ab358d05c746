"""Lays out the wear chart: readings as points, the line through them with its band, the limits, the days of the window.

Across, text and points are in per cent of the width and the line in a stretched square of 100, so that the picture
fits a phone as well as a desk; down, all is in pixels. Pure: evidence in, places out. `templates/wear_chart.html`
draws it.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from itertools import pairwise

from followup.core.forecast.evidence import Evidence, LineOf, ShownLine, ShownPoint
from followup.core.forecast.explain import UNIT_WORDS, exactly
from followup.core.forecast.window import DueWindow
from followup.core.item import Limit

# What stands left of the picture needs 52 px on a phone of 328 px.
LEFT_PERCENT, RIGHT_PERCENT = 17.0, 98.0
TOP_PX, PLOT_PX = 10.0, 160.0
BOTTOM_PX = TOP_PX + PLOT_PX
TICK_ROW_PX, TODAY_ROW_PX, LIKELY_ROW_PX, HEIGHT_PX = 16.0, 33.0, 50.0, 226.0
# What the odometer shows has a row of its own below the ticks.
MILES_ROW_PX = 14.0
# Words of 12 px and a little air.
LINE_PX = 15.0
MOST_TICKS, MOST_GRID = 4, 5
MONTH_STEPS = (1, 2, 3, 6, 12, 24, 48, 96)
# Words at a limit end here on a phone.
LABEL_ENDS_PERCENT = 55.0
# Ticks that begin farther right would leave a narrow picture.
LAST_TICK_PERCENT = 82.0
MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")
# An interval that is long over would flatten the rest.
MOST_PERCENT_USED = 160.0
SHARES = (("all", 1.0), ("half", 0.5), ("none", 0.0))


@dataclass(frozen=True)
class Words:
    """Words in the picture: across in per cent, down in pixels; `anchor` start, middle or end."""

    x: float
    y: float
    words: str
    anchor: str = "start"


@dataclass(frozen=True)
class Level:
    """A line across: of the grid, or of a limit; `y` in pixels."""

    y: float
    label: Words | None


@dataclass(frozen=True)
class Spot:
    """A reading's place; `low_y`, `high_y` its error; `counts` False: it is of another part."""

    x: float
    y: float
    low_y: float | None
    high_y: float | None
    counts: bool


@dataclass(frozen=True)
class Curve:
    """A line and its band as points of a picture 100 wide and as high as the plot in pixels; "" where there is none."""

    of: LineOf
    line: str
    band: str


@dataclass(frozen=True)
class WearChart:
    """Everything that the template draws."""

    grid: tuple[Level, ...]
    limits: tuple[Level, ...]
    ticks: tuple[Words, ...]
    miles: tuple[Words, ...]
    curves: tuple[Curve, ...]
    spots: tuple[Spot, ...]
    today_x: float | None
    due: tuple[float, float, float] | None
    due_y: float
    notes: tuple[Words, ...]
    begins_on: date
    ends_on: date
    height: int
    today_ends_y: float
    likely_ends_y: float
    top: int = int(TOP_PX)
    bottom: int = int(BOTTOM_PX)
    left: float = LEFT_PERCENT
    right: float = RIGHT_PERCENT


def lay_out(window: DueWindow, legal: Limit | None, today: date) -> WearChart | None:
    """Place everything; None where the window has nothing to draw. `legal` is the legal limit, if there is one."""
    evidence = window.evidence
    lines = [line for line in evidence.lines if len(line.points) > 1] if evidence else []
    if evidence is None or not lines:
        return None
    frame = _frame(window, evidence, lines, legal, today)
    limits = tuple(_limits(window, evidence, legal, frame))
    due = _due(window, frame)
    due_at = _due_value(window, evidence)
    ticks = tuple(_ticks(frame))
    miles = tuple(_miles(window, evidence, ticks))
    lower = MILES_ROW_PX if miles else 0.0
    return WearChart(
        grid=tuple(_grid(evidence, frame)),
        limits=limits,
        ticks=tuple(one for _, one in ticks),
        miles=miles,
        curves=tuple(_curve(line, frame) for line in lines),
        spots=tuple(_spots(evidence, frame)),
        today_x=frame.x(today) if frame.begins_on <= today <= frame.ends_on else None,
        due=due,
        due_y=frame.y(due_at),
        notes=tuple(_notes(window, today, frame, lower)),
        begins_on=frame.begins_on,
        ends_on=frame.ends_on,
        height=int(HEIGHT_PX + lower),
        today_ends_y=BOTTOM_PX + TODAY_ROW_PX + lower - LINE_PX + 4,
        likely_ends_y=BOTTOM_PX + LIKELY_ROW_PX + lower - LINE_PX + 4,
    )


@dataclass(frozen=True)
class _Frame:
    begins_on: date
    ends_on: date
    lowest: float
    highest: float

    def share(self, on: date) -> float:
        """Where between the edges, 0 to 1; what lies outside stands at the edge."""
        share = (on - self.begins_on).days / max((self.ends_on - self.begins_on).days, 1)
        return min(max(share, 0.0), 1.0)

    def x(self, on: date) -> float:
        """Per cent of the width."""
        return LEFT_PERCENT + self.share(on) * (RIGHT_PERCENT - LEFT_PERCENT)

    def down(self, value: float) -> float:
        """Pixels below the top of the plot."""
        share = (value - self.lowest) / max(self.highest - self.lowest, 1e-9)
        return (1 - min(max(share, 0.0), 1.0)) * PLOT_PX

    def y(self, value: float) -> float:
        """Pixels below the top of the picture."""
        return TOP_PX + self.down(value)


def _frame(
    window: DueWindow, evidence: Evidence, lines: Sequence[ShownLine], legal: Limit | None, today: date
) -> _Frame:
    points = [point for line in lines for point in line.points]
    readings = [one for one in evidence.readings if one.value is not None]
    begins_on = min(point.on for point in points)
    # Earlier parts are shown as far as they do not press the present one into a corner.
    ends_on = max(max(point.on for point in points), today)
    earlier = [one.on for one in readings if (ends_on - one.on) < 2 * (ends_on - begins_on)]
    begins_on = min([begins_on, *earlier])
    if evidence.unit == "share":
        return _Frame(begins_on, max(_end_of_life(window, ends_on), today), 0.0, 1.0)
    if evidence.marks:
        return _Frame(begins_on, ends_on, 0.0, max(value for _, value in evidence.marks) * 1.08)
    tops = [point.likely if point.high is None else point.high for point in points]
    tops += [one.value + (one.error or 0.0) for one in readings if one.value is not None and one.on >= begins_on]
    tops += [limit.value for limit in (window.limit, legal) if limit is not None and limit.unit == evidence.unit]
    highest = max(tops) * 1.05
    if evidence.unit == "percent used":
        highest = min(max(highest, 110.0), MOST_PERCENT_USED)
    return _Frame(begins_on, ends_on, 0.0, max(highest, 1e-6))


def _end_of_life(window: DueWindow, ends_on: date) -> date:
    """A little beyond the late day: the last one in ten may live for ever."""
    if window.late is None:
        return ends_on
    return min(ends_on, window.late + (window.late - window.as_of) / 5)


def _due_value(window: DueWindow, evidence: Evidence) -> float:
    """Where on the scale the days of the window stand."""
    if evidence.unit == "share":
        return 0.5
    if evidence.unit == "percent used":
        return 100.0
    if evidence.due_at is not None:
        return evidence.due_at
    return window.limit.value if window.limit else 0.0


def _limits(window: DueWindow, evidence: Evidence, legal: Limit | None, frame: _Frame) -> Iterator[Level]:
    """The limits with their words at the left, where the line is far from them; two that are close do not touch."""
    if evidence.unit == "share":
        return
    value, words = _due_value(window, evidence), "recommended"
    if window.limit is not None and not evidence.marks:
        words = f"recommend at {exactly(window.limit.value, window.limit.unit)}"
    y, due = frame.y(value), _due(window, frame)
    low = frame.y(legal.value) if legal is not None and legal.unit == evidence.unit else None
    # The bar of the window would cross the words: they go below the line where nothing else stands there.
    is_crossed = due is not None and due[0] < LABEL_ENDS_PERCENT and (low is None or abs(low - y) > 2.4 * LINE_PX)
    yield Level(y, Words(LEFT_PERCENT + 1, y + 13 if is_crossed and y < BOTTOM_PX - LINE_PX else y - 4, words))
    if legal is not None and low is not None:
        is_close = abs(low - y) < LINE_PX
        label = f"legal limit {exactly(legal.value, legal.unit)}"
        yield Level(low, Words(LEFT_PERCENT + 1, low + 12 if is_close else low - 4, label))


def _grid(evidence: Evidence, frame: _Frame) -> Iterator[Level]:
    if evidence.unit == "share":
        yield from (_labelled(frame.y(share), words) for words, share in SHARES)
    elif evidence.marks:
        last = math.inf
        for word, value in sorted(evidence.marks, key=lambda one: one[1]):
            y = frame.y(value)
            yield _labelled(y, word if last - y >= LINE_PX else "")
            last = y if last - y >= LINE_PX else last
    else:
        for value in _steps(frame.highest):
            # Miles are not named here: five figures and a word leave no room for the picture.
            unit = {"percent used": " %", "mi": ""}.get(evidence.unit, UNIT_WORDS.get(evidence.unit, ""))
            yield _labelled(frame.y(value), f"{round(value, 4):,g}{unit}")


def _labelled(y: float, words: str) -> Level:
    return Level(y, Words(LEFT_PERCENT - 1, y + 4, words, "end") if words else None)


def _steps(highest: float) -> list[float]:
    """Round values from nothing upward, few enough to read."""
    rough = highest / MOST_GRID
    power = 10.0 ** math.floor(math.log10(rough))
    step = next(power * one for one in (1, 2, 5, 10) if power * one >= rough)
    return [step * n for n in range(int(highest / step) + 1)]


def _ticks(frame: _Frame) -> Iterator[tuple[date, Words]]:
    """The first of a month, or of a year, that has room for its words."""
    begins, ends = frame.begins_on, frame.ends_on
    months = (ends.year - begins.year) * 12 + ends.month - begins.month
    step = next((step for step in MONTH_STEPS if months / step <= MOST_TICKS), MONTH_STEPS[-1])
    for number in range(1, months + 1):
        month = begins.year * 12 + begins.month - 1 + number
        first = date(month // 12, month % 12 + 1, 1)
        if month % step == 0 and first <= ends and frame.x(first) <= LAST_TICK_PERCENT:
            words = f"{first.year}" if step >= 12 else f"{MONTHS[first.month - 1]} {first.year}"
            yield first, Words(frame.x(first), BOTTOM_PX + TICK_ROW_PX, words)


def _miles(window: DueWindow, evidence: Evidence, ticks: Sequence[tuple[date, Words]]) -> Iterator[Words]:
    """What the odometer shows at the ticks: as it was told, and from there at the car's own rate."""
    for on, tick in ticks:
        miles = _odometer_on(evidence, window.because.distance_per_day, on)
        if miles is not None:
            yield Words(tick.x, tick.y + MILES_ROW_PX, f"{miles / 1000:,.0f}k mi")


def _odometer_on(evidence: Evidence, miles_a_day: float | None, on: date) -> float | None:
    """Miles on that day; None before the first entry, or where there is none."""
    used = evidence.odometer.used if evidence.odometer else ()
    if not used or miles_a_day is None or on < used[0][0]:
        return None
    for (begin, before), (end, after) in pairwise(used):
        if begin <= on <= end:
            return before + (after - before) * (on - begin).days / max((end - begin).days, 1)
    return used[-1][1] + miles_a_day * (on - used[-1][0]).days


def _curve(line: ShownLine, frame: _Frame) -> Curve:
    def points(of: Sequence[tuple[ShownPoint, float]]) -> str:
        return " ".join(f"{100 * frame.share(one.on):.2f},{frame.down(value):.1f}" for one, value in of)

    inside = [one for one in line.points if one.on <= frame.ends_on]
    low = [(one, one.low) for one in inside if one.low is not None]
    high = [(one, one.high) for one in inside if one.high is not None]
    band = points([*high, *reversed(low)]) if low and high else ""
    return Curve(line.of, points([(one, one.likely) for one in inside]), band)


def _spots(evidence: Evidence, frame: _Frame) -> Iterator[Spot]:
    for one in evidence.readings:
        if one.value is None or one.on < frame.begins_on:
            continue
        low = None if one.error is None else frame.y(one.value - one.error)
        high = None if one.error is None else frame.y(one.value + one.error)
        yield Spot(frame.x(one.on), frame.y(one.value), low, high, one.apart is None)


def _due(window: DueWindow, frame: _Frame) -> tuple[float, float, float] | None:
    """Early, likely and late across; what lies beyond the picture stands at its edge. None where no day lies ahead."""
    if window.likely is None or window.is_past or window.likely <= window.as_of:
        return None
    ends = (window.early or window.as_of, window.likely, window.late or frame.ends_on)
    early, likely, late = (frame.x(on) for on in ends)
    return early, likely, late


def _notes(window: DueWindow, today: date, frame: _Frame, lower: float) -> Iterator[Words]:
    """Words below the axis: today, and the likely month, each in a row of its own."""
    if frame.begins_on <= today <= frame.ends_on:
        yield _below(frame.x(today), TODAY_ROW_PX + lower, "today")
    likely = window.likely
    if likely is not None and _due(window, frame) is not None:
        yield _below(
            frame.x(likely), LIKELY_ROW_PX + lower, f"likely {MONTHS[likely.month - 1]} {likely.day}, {likely.year}"
        )


def _below(x: float, row: float, words: str) -> Words:
    anchor = "start" if x < 35 else "end" if x > 70 else "middle"
    return Words(x, BOTTOM_PX + row, words, anchor)
