"""Arithmetic on dates for the reading of days: coming weekdays, days of the month, weeks; holidays have their own."""

from __future__ import annotations

from calendar import monthrange
from datetime import date, timedelta


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


def days_until(first: date, last: date) -> tuple[date, ...]:
    """The days from the first to the last, at most seven."""
    return tuple(first + timedelta(n) for n in range(min((last - first).days, 6) + 1))


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
