"""Dates, times, phones and lists in words; weekdays are held against the calendar module."""

import calendar
from datetime import date, datetime, time

import pytest
from hypothesis import given
from hypothesis import strategies as st

from followup.core.phrasing import (
    phrase_clock,
    phrase_date,
    phrase_day,
    phrase_duration,
    phrase_hours,
    phrase_list,
    phrase_month,
    phrase_number,
    phrase_past_day,
    phrase_phone,
    phrase_time,
)
from followup.core.segments import segments


def test_a_full_date_and_time_in_both_languages() -> None:
    at = datetime(2026, 3, 3, 9, 0)  # noqa: DTZ001  # wall time at the shop
    assert phrase_time(at, "en") == "Tuesday, March 3 at 9:00 AM"
    assert phrase_time(at, "es") == "martes 3 de marzo a las 9:00 AM"
    assert phrase_time(at.replace(hour=13), "es") == "martes 3 de marzo a la 1:00 PM"
    assert phrase_day(at.date(), "en") == "March 3"
    assert phrase_day(at.date(), "es") == "3 de marzo"
    assert phrase_month(at.date(), "es") == "marzo"


@given(st.dates(date(2000, 1, 1), date(2099, 12, 31)))
def test_weekday_and_month_are_those_of_the_calendar(day: date) -> None:
    assert phrase_date(day, "en") == f"{calendar.day_name[day.weekday()]}, {calendar.month_name[day.month]} {day.day}"
    assert segments(phrase_date(day, "en")).encoding == "GSM-7"


@pytest.mark.parametrize(
    ("at", "said"),
    [(time(0, 0), "12:00 AM"), (time(0, 5), "12:05 AM"), (time(11, 59), "11:59 AM"), (time(12, 0), "12:00 PM"),
     (time(13, 30), "1:30 PM"), (time(23, 59), "11:59 PM")],
)  # fmt: skip
def test_a_wall_time_on_the_twelve_hour_clock(at: time, said: str) -> None:
    assert phrase_clock(at) == said


def test_a_phone_number_as_it_is_printed() -> None:
    assert phrase_phone("+13125550147") == "(312) 555-0147"
    assert phrase_phone("+442079460123") == "+442079460123"


def test_lists() -> None:
    assert phrase_list([], "en") == ""
    assert phrase_list(["oil"], "en") == "oil"
    assert phrase_list(["oil", "tires", "wipers"], "en") == "oil, tires and wipers"
    assert phrase_list(["hoy", "mañana"], "es", any_of=True) == "hoy o mañana"
    # Before the same sound "y" is "e" and "o" is "u" (from memory); before a diphthong it stays.
    assert phrase_list(["aceite", "inspección"], "es") == "aceite e inspección"
    assert phrase_list(["agua", "hielo"], "es") == "agua y hielo"
    assert phrase_list(["siete", "ocho"], "es", any_of=True) == "siete u ocho"


def test_numbers_and_durations() -> None:
    assert [phrase_number(value) for value in (4.0, 4.26, 41230, 0)] == ["4", "4.3", "41,230", "0"]
    assert [phrase_duration(hours, "en") for hours in (0.3, 0.8, 1.2, 2.0)] == [
        "about half an hour", "about an hour", "about an hour and a half", "about 2 hours",
    ]  # fmt: skip
    assert [phrase_duration(hours, "es") for hours in (0.3, 1.0, 1.5, 2.5)] == [
        "una media hora", "una hora", "una hora y media", "unas 2 horas y media",
    ]  # fmt: skip


def test_opening_hours_join_days_that_are_alike() -> None:
    week = dict.fromkeys(("mon", "tue", "wed", "fri"), ("07:30", "18:00")) | {"sat": ("08:00", "14:00")}
    assert phrase_hours(week, "en") == (
        "Monday-Wednesday 7:30 AM-6:00 PM, Friday 7:30 AM-6:00 PM, Saturday 8:00 AM-2:00 PM"
    )
    assert phrase_hours({"mon": ("07:30", "18:00"), "tue": ("07:30", "18:00")}, "es") == (
        "lunes a martes 7:30 AM a 6:00 PM"
    )


def test_a_past_day_names_its_year_where_it_could_be_taken_for_another() -> None:
    """Common practice: a bare "December 20" read on December 14 is the coming one."""
    today = date(2026, 12, 14)
    assert phrase_past_day(date(2025, 12, 20), today, "en") == "December 20, 2025"
    assert phrase_past_day(date(2025, 12, 4), today, "es") == "4 de diciembre de 2025"
    assert phrase_past_day(date(2026, 2, 20), today, "en") == "February 20"
    assert phrase_past_day(date(2026, 12, 14), date(2027, 1, 20), "es") == "14 de diciembre"
