"""Dates reckoned for replies, held against python-dateutil and the tables of US federal holidays."""

from __future__ import annotations

from datetime import date

from dateutil.easter import easter
from dateutil.relativedelta import relativedelta
from hypothesis import given
from hypothesis import strategies as st

from followup.core.replies import calendar_days as cal
from followup.core.replies.holidays import easter_sunday, hebrew_new_year, holiday_in

days = st.dates(min_value=date(1990, 1, 1), max_value=date(2200, 12, 31))


def test_easter_is_that_of_the_library() -> None:
    # source: python-dateutil, easter.py (western)
    assert [easter_sunday(year) for year in range(1900, 2300)] == [easter(year) for year in range(1900, 2300)]


@given(day=days, months=st.integers(-24, 60))
def test_months_are_added_as_the_library_adds_them(day: date, months: int) -> None:
    # source: python-dateutil, relativedelta
    assert cal.add_months(day, months) == day + relativedelta(months=months)
    assert cal.last_day_of_month(day) == day + relativedelta(day=31)


def test_holidays_fall_on_their_dates() -> None:
    # source: U.S. Office of Personnel Management, federal holidays of 2026 (from memory); Easter 2026: April 5
    told = {
        "mlk_day": (1, 19), "presidents_day": (2, 16), "memorial_day": (5, 25), "juneteenth": (6, 19),
        "independence_day": (7, 4), "labor_day": (9, 7), "columbus_day": (10, 12), "veterans_day": (11, 11),
        "thanksgiving": (11, 26), "christmas": (12, 25), "easter": (4, 5), "good_friday": (4, 3),
        "black_friday": (11, 27), "mothers_day": (5, 10), "fathers_day": (6, 21),
        "ash_wednesday": (2, 18), "election_day": (11, 3), "grandparents_day": (9, 13), "arbor_day": (4, 24),
        "passover": (4, 2), "yom_kippur": (9, 21), "hanukkah": (12, 5), "purim": (3, 3),
    }  # fmt: skip
    assert {name: holiday_in(2026, name) for name in told} == {
        name: date(2026, month, day) for name, (month, day) in told.items()
    }


def test_the_hebrew_year_begins_on_its_dates() -> None:
    # source: published calendars (from memory); it never begins on a Sunday, a Wednesday or a Friday
    told = [hebrew_new_year(year) for year in (2023, 2024, 2025, 2026, 2027)]
    assert told == [date(2023, 9, 16), date(2024, 10, 3), date(2025, 9, 23), date(2026, 9, 12), date(2027, 10, 2)]
    assert not {hebrew_new_year(year).weekday() for year in range(1900, 2200)} & {6, 2, 4}
