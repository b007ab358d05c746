"""The date code of a tire: week and year of its making, the last digits of its identification number.

49 CFR 574.5: four digits since 2000 (0310 is the third week of 2010); three digits before. Week 01 is the first full
week from Sunday to Saturday of its year (from memory).
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta


class BadDateCode(Exception):
    """This is no date code of a tire."""


@dataclass(frozen=True)
class DateCode:
    """Week and year; `year` is None for three digits, which say only the last digit of a year before 2000."""

    week: int
    year: int | None

    @property
    def made_on(self) -> date:
        """The Sunday on which its week began; for three digits that of 1999: it is at least so old."""
        return week_begins_on(self.year or 1999, self.week)


def week_begins_on(year: int, week: int) -> date:
    """The Sunday on which that week of that year begins; week 1 is the first full Sunday-Saturday week."""
    first = date(year, 1, 1)
    return first + timedelta(days=(6 - first.weekday()) % 7, weeks=week - 1)


def weeks_of(year: int) -> int:
    """How many Sundays the year has: 52 or 53."""
    return 53 if week_begins_on(year, 53).year == year else 52


def read_date_code(text: str) -> DateCode:
    """Read "0310" or, from before 2000, "319". Raises `BadDateCode` with what to do."""
    digits = text.strip()
    if not (digits.isascii() and digits.isdigit() and len(digits) in (3, 4)):
        raise BadDateCode("a date code is the last four digits in the oval: week and year, like 0310")
    week, year = int(digits[:2]), (2000 + int(digits[2:]) if len(digits) == 4 else None)
    if not 1 <= week <= 53:
        raise BadDateCode(f"there is no week {digits[:2]}: weeks run from 01 to 53, please read it again")
    return DateCode(week, year)
