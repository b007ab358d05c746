"""The reasons of a due window as pages show them: one line, sentences, a chart, and tables that say the same."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date

from followup.core.forecast.evidence import ShownLine, ShownPoint, ShownReading
from followup.core.forecast.explain import APART_WORDS, amount, explain_in_full, measured_words
from followup.core.forecast.window import DueWindow
from followup.core.item import Limit
from followup.web.wear_chart import WearChart, lay_out
from followup.web.words import day, number

# Below the picture: what its marks mean, by what is drawn.
_LEGENDS = {
    "value": "Dots are readings with their usual error, rings readings of another part; the line is as likely too high"
    " as too low, 8 of 10 lie in its band.",
    "good": "How many of such parts are still good by then. Dots are the days on which it was looked at.",
    "miles": "How much of the interval is used up: the line with a band by miles, the dashed one by the calendar.",
    "days": "How much of the interval is used up, by the calendar.",
    "amount": "What is left, from where it was last seen; 8 of 10 lie in the band.",
}
_WINDOW = " The bar across reaches from early (1 in 10) to late (9 in 10); the line down from it is likely."


@dataclass(frozen=True)
class SeenPoint:
    """The line on one day, in words."""

    label: str
    on: date
    likely: str
    between: str


@dataclass(frozen=True)
class SeenReading:
    """A reading in words."""

    on: date
    odometer: str
    measured: str
    counts: str


@dataclass(frozen=True)
class WhyShown:
    """One window's reasons."""

    title: str
    line: str
    sentences: tuple[str, ...]
    chart: WearChart | None
    legend: str
    readings: tuple[SeenReading, ...]
    points: tuple[SeenPoint, ...]


def why_shown(window: DueWindow, title: str, condition: str, legal: Limit | None, today: date) -> WhyShown:
    """The reasons of `window`; `title` is what the page calls the item, `legal` its legal limit."""
    evidence, chart = window.evidence, lay_out(window, legal, today)
    if window.stored_set:
        title = f"{title}, {window.stored_set.replace('_', '-')} set, stored"
    has_day = window.likely is not None and window.likely > window.as_of and not window.is_past
    main = evidence.lines[-1] if evidence and evidence.lines else None
    return WhyShown(
        title=title,
        line=f"{condition}{_when(window)}",
        sentences=explain_in_full(window),
        chart=chart,
        legend=f"{_LEGENDS[main.of]}{_WINDOW if has_day else ''}" if main else "",
        readings=tuple(_reading(one) for one in evidence.readings) if evidence else (),
        points=tuple(_points(window, main, evidence.unit, today)) if main and evidence and chart else (),
    )


def _when(window: DueWindow) -> str:
    if window.is_past:
        return ""
    if window.likely is None:
        return ", no date yet"
    return f", likely {day(window.likely)}" if window.likely > window.as_of else ", may be due already"


def _reading(one: ShownReading) -> SeenReading:
    odometer = "-" if one.odometer_miles is None else f"{number(round(one.odometer_miles))} mi"
    counts = "yes" if one.apart is None else f"no: {APART_WORDS[one.apart]}"
    return SeenReading(one.on, odometer, measured_words(one) or "-", counts)


def _points(window: DueWindow, line: ShownLine, unit: str, today: date) -> Iterator[SeenPoint]:
    if unit == "marks":
        return
    days: list[tuple[str, date | None]] = [("Today", today)]
    if not window.is_past:
        days += [("Early, 1 in 10", window.early), ("Likely, even odds", window.likely), ("Late, 9 in 10", window.late)]
    for label, on in days:
        point = line.at(on) if on is not None else None
        if on is not None and point is not None:
            yield SeenPoint(label, on, _value(point.likely, unit), _between(point, unit))


def _value(value: float, unit: str) -> str:
    if unit == "share":
        return f"{10 * value:.0f} of 10 still good"
    return amount(value, "percent" if unit == "percent used" else unit)


def _between(point: ShownPoint, unit: str) -> str:
    if point.low is None or point.high is None:
        return "-"
    return f"{_value(point.low, unit)} to {_value(point.high, unit)}"
