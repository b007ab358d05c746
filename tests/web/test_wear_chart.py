"""The wear chart's places: readings and lines where they belong, words that do not touch, nothing outside it."""

from __future__ import annotations

import random
from dataclasses import replace
from datetime import date, timedelta
from itertools import combinations, pairwise

import pytest

from followup.core.forecast.due import forecast_cars
from followup.core.forecast.evidence import Evidence, OdometerUse, ShownLine, ShownPoint, ShownReading
from followup.core.forecast.window import DueWindow
from followup.core.item import Limit
from followup.core.items import BY_CODE
from followup.web import wear_chart
from followup.web.wear_chart import BOTTOM_PX, LEFT_PERCENT, PLOT_PX, RIGHT_PERCENT, TOP_PX, WearChart, Words, lay_out
from followup.web.why import why_shown
from tests.core.forecast.test_any_history import car as any_car
from tests.core.forecast.told import history, tread, visit, window

TODAY = date(2026, 1, 10)
LEGAL = Limit(2, "32nds", "legal")
# What a letter of 12 px is wide at most on average, and how wide the picture is on a phone.
LETTER_PX, PHONE_PX = 7.0, 328.0


def tire(**more: object) -> DueWindow:
    """A tire that was 10/32 two years ago and is at 4/32 a year ahead, on a straight line without a model."""
    points = (
        ShownPoint(date(2024, 1, 10), 10.0, 9.0, 11.0),
        ShownPoint(TODAY, 6.0, 5.0, 7.0),
        ShownPoint(date(2027, 1, 10), 4.0, 2.0, 6.0),
    )
    readings = (
        ShownReading(date(2024, 1, 10), 10, "32nds", 10.0, 0.5, 40_000, "rotated"),
        ShownReading(TODAY, 6, "32nds", 6.0, 0.5, 60_000),
    )
    made = window(visit("2026-01-10", 60_000, tread(6)))
    evidence = Evidence(unit="32nds", readings=readings, lines=(ShownLine("value", points),))
    days = {"early": date(2026, 7, 10), "likely": date(2027, 1, 10), "late": None}
    return replace(made, evidence=evidence, **(days | more))


def chart(one: DueWindow, legal: Limit | None = LEGAL, today: date = TODAY) -> WearChart:
    """Its chart, which it has."""
    found = lay_out(one, legal, today)
    assert found is not None
    return found


def test_everything_stands_where_its_day_and_value_are() -> None:
    found = chart(tire())
    # From 2024-01-10 to 2027-01-10 are 1,096 days; today is the 731st.
    assert found.today_x == pytest.approx(LEFT_PERCENT + 731 / 1096 * (RIGHT_PERCENT - LEFT_PERCENT))
    assert [one.x for one in found.spots] == pytest.approx([LEFT_PERCENT, found.today_x])
    # The highest edge of the band is 11, with a twentieth of air.
    down = [TOP_PX + PLOT_PX * (1 - value / 11.55) for value in (4.0, 2.0, 6.0, 10.0)]
    assert [one.y for one in found.limits] == pytest.approx(down[:2])
    assert [one.y for one in reversed(found.spots)] == pytest.approx(down[2:])
    low, high = found.spots[1].low_y, found.spots[1].high_y
    assert low is not None and high is not None
    assert low - high == pytest.approx(PLOT_PX / 11.55)
    assert [one.counts for one in found.spots] == [False, True]
    assert found.curves[0].line.split() == ["0.00,21.5", "66.70,76.9", "100.00,104.6"]
    assert found.due is not None and found.due[2] == RIGHT_PERCENT


def test_limits_say_their_value() -> None:
    assert [one.label.words for one in chart(tire()).limits if one.label] == ["recommend at 4/32", "legal limit 2/32"]
    assert len(chart(tire(), None).limits) == 1


def test_the_odometer_stands_below_the_days() -> None:
    """20,000 miles in the two years between the entries, then on at 30 miles a day."""
    assert not chart(tire()).miles
    made = tire()
    assert made.evidence is not None
    use = OdometerUse(used=((date(2024, 1, 10), 40_000.0), (TODAY, 60_000.0)))
    told = replace(
        made, evidence=replace(made.evidence, odometer=use), because=replace(made.because, distance_per_day=30)
    )
    found = chart(told)
    assert [one.words for one in found.ticks] == ["2025", "2026"]
    # 357 of 731 days of 20,000 miles; nine days before the second entry.
    assert [one.words for one in found.miles] == ["50k mi", "60k mi"]
    late = chart(
        replace(told, evidence=replace(made.evidence, odometer=OdometerUse(used=((date(2024, 9, 1), 45_000.0),))))
    )
    assert [one.words for one in late.miles] == ["49k mi", "60k mi"]


def test_what_was_found_due_has_no_bar() -> None:
    assert chart(tire(is_past=True)).due is None
    assert chart(tire(likely=None)).due is None


def test_without_a_line_there_is_no_picture() -> None:
    assert lay_out(replace(tire(), evidence=None), LEGAL, TODAY) is None
    assert lay_out(replace(tire(), evidence=Evidence(unit="")), LEGAL, TODAY) is None
    shown = why_shown(replace(tire(), evidence=None), "Tire tread LF", "fine", LEGAL, TODAY)
    assert shown.chart is None and shown.sentences and not shown.points


def test_the_table_says_what_the_picture_shows() -> None:
    shown = why_shown(tire(), "Tire tread LF", "fine", LEGAL, TODAY)
    assert [(one.measured, one.odometer, one.counts) for one in shown.readings] == [
        ("10/32", "40,000 mi", "no: the wheel was moved since"), ("6/32", "60,000 mi", "yes"),
    ]  # fmt: skip
    assert [(one.label, one.likely, one.between) for one in shown.points] == [
        ("Today", "6/32", "5/32 to 7/32"),
        ("Early, 1 in 10", "5/32", "4/32 to 7/32"),
        ("Likely, even odds", "4/32", "2/32 to 6/32"),
    ]
    assert shown.line == "fine, likely Sun, Jan 10, 2027"


def boxes(found: WearChart) -> list[tuple[str, float, float, float, float]]:
    """Words with the left, right, top and bottom of their boxes on a phone, in px."""
    labels = [one.label for one in (*found.grid, *found.limits) if one.label]

    def box(one: Words) -> tuple[str, float, float, float, float]:
        width, x = LETTER_PX * len(one.words), one.x * PHONE_PX / 100
        left = x - {"start": 0.0, "middle": width / 2, "end": width}[one.anchor]
        return one.words, left, left + width, one.y - 10, one.y + 3

    return [box(one) for one in (*labels, *found.ticks, *found.miles, *found.notes)]


def windows_of_any_cars() -> list[tuple[DueWindow, date]]:
    """Windows of all kinds, seen on the day and years later."""
    draw = random.Random(12)
    cars = [history(*visits) for number in range(60) if (visits := any_car(number, draw))]
    found: list[tuple[DueWindow, date]] = []
    for as_of in (date(2023, 6, 1), date(2027, 3, 1)):
        told = forecast_cars(cars, as_of, with_stored_sets=True, with_evidence=True)
        found += [(one, as_of) for one in told]
    return found


def test_of_any_car_words_do_not_touch_and_nothing_lies_outside() -> None:
    drawn = 0
    for one, today in windows_of_any_cars():
        found = lay_out(one, BY_CODE[one.item].limit("legal"), today)
        if found is None:
            continue
        drawn += 1
        assert len(found.ticks) <= wear_chart.MOST_TICKS + 1
        for here, there in combinations(boxes(found), 2):
            is_beside = here[2] <= there[1] + 1 or there[2] <= here[1] + 1
            is_under = here[4] <= there[3] or there[4] <= here[3]
            assert is_beside or is_under, (one.item, here, there)
        assert all(left >= 0 and right <= PHONE_PX + 2 for _, left, right, _, _ in boxes(found)), boxes(found)
        places = [*found.spots, *found.limits, *found.grid]
        assert all(TOP_PX - 1e-6 <= place.y <= BOTTOM_PX + 1e-6 for place in places)
        for curve in found.curves:
            pairs = [tuple(map(float, pair.split(","))) for pair in curve.line.split()]
            assert all(0 <= x <= 100 and 0 <= y <= PLOT_PX for x, y in pairs)
            assert all(before[0] <= after[0] for before, after in pairwise(pairs))
    assert drawn > 200


def test_a_life_that_may_never_end_leaves_room_for_its_window() -> None:
    battery = {"item": "battery", "verdict": "good", "changed_on": "2024-01-10"}
    one = forecast_cars([history(visit("2026-01-10", 60_000, battery))], "last", with_evidence=True)[0]
    found = chart(one, None)
    assert one.late is not None and found.ends_on < one.late + timedelta(days=800)
    assert found.due is not None and found.due[2] - found.due[0] > 20
