"""Arithmetic on dates for the reading of days: coming weekdays, days of the month, holidays by name, weeks."""

from __future__ import annotations

from calendar import monthrange
from datetime import date, timedelta
from functools import lru_cache


def monday_of(day: date) -> date:
    """The Monday of the Monday-Sunday week that holds this day."""
    return day - timedelta(day.weekday())


def next_weekday(today: date, weekday: int) -> date:
    """The next occurrence of a weekday (0 is Monday) after today, never today itself."""
    return today + timedelta((weekday - today.weekday() - 1) % 7 + 1)


def weekday_of_week(week: date, weekday: int) -> date:
    """The given weekday in the Monday-Sunday week that holds `week`."""
    return monday_of(week) + timedelta(weekday)


def next_day_of_month(today: date, day: int) -> date | None:
    """The next date with this day of the month from today on; None where there is none (the 32nd)."""
    if not 1 <= day <= 31:
        return None
    first = today.replace(day=1)
    for months in range(13):
        month = add_months(first, months)
        found = make_date(month.year, month.month, day)
        if found and found >= today:
            return found
    return None


def next_month_day(today: date, month: int, day: int) -> date | None:
    """The next such date from today on (a February 29 may be years off); None for a date that no year has."""
    for year in range(today.year, today.year + 9):
        found = make_date(year, month, day)
        if found and found >= today:
            return found
    return None


def make_date(year: int, month: int, day: int) -> date | None:
    """The date, or None where there is no such date."""
    try:
        return date(year, month, day)
    except ValueError:
        return None


def last_day_of_month(day: date) -> date:
    """The last day of the month that holds this day."""
    return day.replace(day=monthrange(day.year, day.month)[1])


def next_first_of_month(today: date, month: int) -> date:
    """The next first day of a month (1-12) after today."""
    year = today.year if month > today.month else today.year + 1
    return date(year, month, 1)


def add_months(day: date, months: int) -> date:
    """The day so many months on, cut to the month's length."""
    year, month = divmod(day.year * 12 + day.month - 1 + months, 12)
    return date(year, month + 1, min(day.day, monthrange(year, month + 1)[1]))


def add_workdays(day: date, count: int) -> date:
    """The day so many Monday-Friday days on."""
    while count > 0:
        day += timedelta(1)
        count -= day.weekday() < 5
    return day


def nth_weekday_of_month(month: date, weekday: int, nth: int) -> date | None:
    """The nth weekday (-1 is the last) of the month that holds this day; None where it has no fifth."""
    if nth < 0:
        return _last_weekday(month.year, month.month, weekday)
    found = _nth_weekday(month.year, month.month, weekday, nth)
    return found if found.month == month.month else None


def _nth_weekday(year: int, month: int, weekday: int, nth: int) -> date:
    first = date(year, month, 1)
    return first + timedelta((weekday - first.weekday()) % 7 + 7 * (nth - 1))


def _last_weekday(year: int, month: int, weekday: int) -> date:
    last = last_day_of_month(date(year, month, 1))
    return last - timedelta((last.weekday() - weekday) % 7)


def easter_sunday(year: int) -> date:
    """Easter Sunday of the Gregorian calendar, by the computus of Meeus (Astronomical Algorithms, chapter 8)."""
    a, (b, c) = year % 19, divmod(year, 100)
    d, e = divmod(b, 4)
    h = (19 * a + b - d - (b - (b + 8) // 25 + 1) // 3 + 15) % 30
    i, k = divmod(c, 4)
    weekday = (32 + 2 * e + 2 * i - h - k) % 7
    m = (a + 11 * h + 22 * weekday) // 451
    month, day = divmod(h + weekday - 7 * m + 114, 31)
    return date(year, month, day + 1)


@lru_cache(maxsize=1024)
def holiday_in(year: int, name: str) -> date:
    """The date of a US federal or common holiday (5 U.S.C. 6103 for the federal ones). KeyError for an unknown name."""
    fixed = {
        "christmas": (12, 25), "christmas_eve": (12, 24), "boxing_day": (12, 26), "new_year": (1, 1),
        "new_years_eve": (12, 31), "independence_day": (7, 4), "juneteenth": (6, 19), "veterans_day": (11, 11),
        "valentines_day": (2, 14), "halloween": (10, 31), "st_patricks_day": (3, 17), "groundhog_day": (2, 2),
        "three_kings": (1, 6), "day_of_the_dead": (11, 2), "workers_day": (5, 1),
    }  # fmt: skip
    if name in fixed:
        return date(year, *fixed[name])
    nth = {
        "thanksgiving": (11, 3, 4), "labor_day": (9, 0, 1), "mlk_day": (1, 0, 3), "presidents_day": (2, 0, 3),
        "columbus_day": (10, 0, 2), "mothers_day": (5, 6, 2), "fathers_day": (6, 6, 3), "super_bowl": (2, 6, 2),
    }  # fmt: skip
    if name in nth:
        return _nth_weekday(year, *nth[name])
    if name == "memorial_day":
        return _last_weekday(year, 5, 0)
    if name in ("black_friday", "cyber_monday"):
        return holiday_in(year, "thanksgiving") + timedelta(1 if name == "black_friday" else 4)
    return easter_sunday(year) + timedelta({"easter": 0, "easter_monday": 1, "good_friday": -2}[name])


def next_holiday(today: date, name: str) -> date:
    """The next date of the holiday from today on."""
    this_year = holiday_in(today.year, name)
    return this_year if this_year >= today else holiday_in(today.year + 1, name)
