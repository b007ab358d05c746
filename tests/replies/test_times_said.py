"""Properties of the reader of times: what our own grammar says is read back; form, case and emoji change nothing."""

from __future__ import annotations

import random
from datetime import date, datetime, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from followup.core.replies.contract import ReplyOut, TimeWindow
from followup.rehearsal.bench.labeled_times import ENGLISH, SPANISH
from followup.rehearsal.bench.said_times import CLOSES, OPENS, Spoken, speak
from tests.replies.reading import NOW, read

SATURDAY = (480, 840)
languages = st.sampled_from(["en", "es"])
mornings = st.dates(min_value=date(2025, 1, 1), max_value=date(2031, 12, 31)).map(
    lambda day: datetime.fromisoformat(f"{day}T07:00")
)


def _moment(day: date, minute: int) -> str:
    return f"{day.isoformat()}T{minute // 60:02d}:{minute % 60:02d}"


def meant(spoken: Spoken) -> TimeWindow:
    """The window that a spoken sentence names, by the conventions of the contract."""
    if spoken.first is None:
        return TimeWindow(start=_moment(spoken.day, OPENS), end=_moment(spoken.day, CLOSES), grain="day")
    last = None if spoken.last is None else _moment(spoken.day, spoken.last)
    return TimeWindow(start=_moment(spoken.day, spoken.first), end=last, grain="part" if last else "time")


@settings(max_examples=400, deadline=None)
@given(seed=st.integers(0, 10**9), now=mornings, language=languages)
def test_what_is_said_is_read_back(seed: int, now: datetime, language: str) -> None:
    spoken = speak(random.Random(seed), now, language)
    out = read(spoken.text, "day", now=now, language=language)
    assert (out.times, out.question) == ((meant(spoken),), None), spoken


def _fits_the_hours(window: TimeWindow) -> bool:
    """Whether a window lies in the usual hours and ahead of now."""
    if window.start.startswith("T"):
        return True
    start, end = datetime.fromisoformat(window.start), datetime.fromisoformat(window.end or window.start)
    opens, closes = SATURDAY if start.weekday() == 5 else (OPENS, CLOSES)
    last = SATURDAY[1] if end.weekday() == 5 else CLOSES
    minutes = start.hour * 60 + start.minute, end.hour * 60 + end.minute
    return start >= NOW and start.weekday() < 6 and opens <= minutes[0] < closes and minutes[1] <= last


TEXTS = [(asked_in, text) for asked_in, text, _ in ENGLISH + SPANISH]


@pytest.mark.parametrize(("asked_in", "text"), TEXTS)
def test_times_lie_ahead_and_in_the_opening_hours(asked_in: str, text: str) -> None:
    # source: the reply contract; a closed day is kept as an empty one and asked about
    out = read(text, asked_in)
    for window in out.times:
        is_closed = window.grain == "day" and window.start == window.end
        assert _fits_the_hours(window) or (is_closed and datetime.fromisoformat(window.start) > NOW)


def _heart(out: ReplyOut) -> tuple[object, ...]:
    return out.meanings, out.times, out.avoid, out.until, out.question


DRESSES = (
    str.upper, str.capitalize, str.title,
    lambda text: text + "!", lambda text: text + "...", lambda text: text + " 🙂", lambda text: "🚗 " + text,
    lambda text: f"  {text}  ", lambda text: text.replace(" ", "  "), lambda text: text + " 👍🏽",
)  # fmt: skip


@settings(max_examples=300, deadline=None)
@given(case=st.sampled_from(TEXTS), dress=st.sampled_from(DRESSES))
def test_case_marks_and_emoji_change_nothing(case: tuple[str, str], dress: object) -> None:
    asked_in, text = case
    if not callable(dress) or text.endswith(("?", "!!")):
        return
    assert _heart(read(dress(text), asked_in)) == _heart(read(text, asked_in))


def _forms(day: date) -> list[str]:
    """One date in the forms in which it can be written with its month."""
    return [
        f"{day:%B} {day.day}", f"{day.day} {day:%B}", f"{day:%b} {day.day}", f"{day.month}/{day.day}",
        f"{day:%m/%d/%Y}", f"{day:%m-%d-%Y}", f"{day:%Y-%m-%d}", f"{day:%A}, {day:%B} {day.day}",
        f"{day:%a} {day.month}/{day.day}", f"the {day.day} of {day:%B}", f"{day.month}/{day.day}/{day:%y}",
    ]  # fmt: skip


@settings(max_examples=150, deadline=None)
@given(ahead=st.integers(1, 300), data=st.data())
def test_a_date_in_another_form_is_the_same_day(ahead: int, data: st.DataObject) -> None:
    day = NOW.date() + timedelta(ahead)
    one, other = (data.draw(st.sampled_from(_forms(day))) for _ in range(2))
    assert read(one).times == read(other).times
    assert [window.start[:10] for window in read(one).times] == [day.isoformat()]


def test_the_order_of_day_and_month_is_the_shops() -> None:
    # source: the reply contract, `order`
    assert [window.start[:10] for window in read("3/4", order="day-first").times] == ["2026-04-03"]
    assert [window.start[:10] for window in read("4/3", order="month-first").times] == ["2026-04-03"]
    assert [window.start[:10] for window in read("25/3", order="month-first").times] == ["2026-03-25"]
