"""Days in words for staff."""

from __future__ import annotations

from datetime import date

# Not strftime's: those change with the machine's language.
_MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")


def day_words(on: date) -> str:
    """`Jan 10, 2026`."""
    return f"{_MONTHS[on.month - 1]} {on.day}, {on.year}"


def month_words(month: str) -> str:
    """`Aug 2026` of "2026-08"."""
    year, _, number = month.partition("-")
    return f"{_MONTHS[int(number) - 1]} {year}"
