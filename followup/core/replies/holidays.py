"""The dates of holidays by name: fixed ones, nth weekdays of a month, those that follow Easter or the Hebrew year."""

from __future__ import annotations

from datetime import date, timedelta
from functools import lru_cache

from followup.core.replies.calendar_days import nth_weekday_of_month

_FIXED = {
    "christmas": (12, 25), "christmas_eve": (12, 24), "boxing_day": (12, 26), "new_year": (1, 1),
    "new_years_eve": (12, 31), "independence_day": (7, 4), "juneteenth": (6, 19), "veterans_day": (11, 11),
    "valentines_day": (2, 14), "halloween": (10, 31), "st_patricks_day": (3, 17), "groundhog_day": (2, 2),
    "three_kings": (1, 6), "day_of_the_dead": (11, 2), "workers_day": (5, 1), "april_fools": (4, 1),
    "tax_day": (4, 15), "earth_day": (4, 22), "cinco_de_mayo": (5, 5), "flag_day": (6, 14), "canada_day": (7, 1),
    "bastille_day": (7, 14), "womens_day": (3, 8), "pi_day": (3, 14), "patriot_day": (9, 11),
    "constitution_day": (9, 17), "all_saints": (11, 1), "guy_fawkes": (11, 5), "kwanzaa": (12, 26),
    "inauguration_day": (1, 20), "guadalupe": (12, 12),
}  # fmt: skip
"""Month and day."""
_NTH = {
    "thanksgiving": (11, 3, 4), "labor_day": (9, 0, 1), "memorial_day": (5, 0, -1), "mlk_day": (1, 0, 3),
    "presidents_day": (2, 0, 3), "columbus_day": (10, 0, 2), "mothers_day": (5, 6, 2), "fathers_day": (6, 6, 3),
    "super_bowl": (2, 6, 2), "arbor_day": (4, 4, -1),
}  # fmt: skip
"""Month, weekday (0 is Monday) and which one of them, -1 the last."""
_AFTER = {
    "black_friday": ("thanksgiving", 1), "small_business_saturday": ("thanksgiving", 2),
    "cyber_monday": ("thanksgiving", 4), "giving_tuesday": ("thanksgiving", 5), "grandparents_day": ("labor_day", 6),
}  # fmt: skip
"""Days after another holiday."""
_FROM_EASTER = {
    "mardi_gras": -47, "ash_wednesday": -46, "palm_sunday": -7, "holy_thursday": -3, "good_friday": -2,
    "holy_saturday": -1, "easter": 0, "easter_monday": 1, "ascension": 39, "pentecost": 49, "whit_monday": 50,
}  # fmt: skip
_FROM_HEBREW_NEW_YEAR = {"purim": -193, "passover": -163, "rosh_hashanah": 0, "yom_kippur": 9, "hanukkah": 83}
"""Days from the Hebrew new year that begins in the same civil year; Hanukkah is a day later in a long year."""
_HEBREW_EPOCH = -1373427
"""The ordinal of the first day of the Hebrew calendar."""


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


def hebrew_new_year(year: int) -> date:
    """The first day of the Hebrew year that begins in this civil year (Calendrical Calculations, chapter 8)."""
    hebrew = year + 3761
    before, this, after = (_elapsed(one) for one in (hebrew - 1, hebrew, hebrew + 1))
    delay = 2 if after - this == 356 else 1 if this - before == 382 else 0
    return date.fromordinal(_HEBREW_EPOCH + this + delay)


def _elapsed(hebrew: int) -> int:
    """Days from the epoch to the mean conjunction of a Hebrew new year, put off where the rules of weekdays say so."""
    months = (235 * hebrew - 234) // 19
    day = 29 * months + (12084 + 13753 * months) // 25920
    return day + 1 if 3 * (day + 1) % 7 < 3 else day


def _from_hebrew_new_year(year: int, name: str) -> date:
    new_year = hebrew_new_year(year)
    is_long = (hebrew_new_year(year + 1) - new_year).days in (355, 385)
    return new_year + timedelta(_FROM_HEBREW_NEW_YEAR[name] + (name == "hanukkah" and is_long))


@lru_cache(maxsize=1024)
def holiday_in(year: int, name: str) -> date:
    """The date of a US federal or common holiday (5 U.S.C. 6103 for the federal ones). KeyError for an unknown name."""
    if name in _FIXED:
        return date(year, *_FIXED[name])
    if name in _NTH:
        month, weekday, nth = _NTH[name]
        return nth_weekday_of_month(date(year, month, 1), weekday, nth) or date(year, month, 1)
    if name in _AFTER:
        other, shift = _AFTER[name]
        return holiday_in(year, other) + timedelta(shift)
    if name == "election_day":
        return (nth_weekday_of_month(date(year, 11, 1), 0, 1) or date(year, 11, 1)) + timedelta(1)
    if name in _FROM_HEBREW_NEW_YEAR:
        return _from_hebrew_new_year(year, name)
    return easter_sunday(year) + timedelta(_FROM_EASTER[name])


def next_holiday(today: date, name: str) -> date:
    """The next date of the holiday from today on."""
    this_year = holiday_in(today.year, name)
    return this_year if this_year >= today else holiday_in(today.year + 1, name)
