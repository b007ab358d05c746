"""Date codes of tires, against 49 CFR 574.5."""

from datetime import date

import pytest

from followup.core.date_code import BadDateCode, read_date_code, week_begins_on, weeks_of


@pytest.mark.parametrize(
    ("code", "week", "year"),
    [
        ("0310", 3, 2010),  # 49 CFR 574.5: 0310 is the third week of 2010
        ("3815", 38, 2015),  # 64 FR 36807 and 49 CFR 574.5: 3815 is the 38th week of 2015
        ("0100", 1, 2000),  # four digits began with 2000: 64 FR 36807 (1999)
        ("5320", 53, 2020),
    ],
)
def test_four_digits_49_cfr_574_5(code: str, week: int, year: int) -> None:
    read = read_date_code(code)
    assert (read.week, read.year) == (week, year)


def test_three_digits_are_before_2000() -> None:
    # 64 FR 36807: until 1999 three digits, week and the last digit of the year.
    read = read_date_code("319")
    assert (read.week, read.year) == (31, None)
    assert read.made_on < date(2000, 1, 1)


@pytest.mark.parametrize("code", ["0010", "5410", "9910", "000", "12", "12345", "ab10", "", "03 10", "０３１０"])
def test_what_is_no_date_code(code: str) -> None:
    # Weeks 00 and 54 and over do not exist (49 CFR 574.5).
    with pytest.raises(BadDateCode):
        read_date_code(code)


@pytest.mark.parametrize(
    ("year", "begins_on"),
    [
        # Calendar: the first Sunday of each year, on which its first full Sunday-Saturday week begins (from memory of
        # 49 CFR 574.5).
        (2010, date(2010, 1, 3)),
        (2012, date(2012, 1, 1)),
        (2015, date(2015, 1, 4)),
        (2021, date(2021, 1, 3)),
        (2023, date(2023, 1, 1)),
    ],
)
def test_week_one_is_the_first_full_week(year: int, begins_on: date) -> None:
    assert week_begins_on(year, 1) == begins_on
    assert begins_on.strftime("%A") == "Sunday"


def test_only_some_years_have_a_week_53() -> None:
    # Calendar: 2012 (leap, began on a Sunday) and 2023 (began on a Sunday) hold 53 Sundays; 2010 holds 52.
    assert [weeks_of(year) for year in (2010, 2012, 2023)] == [52, 53, 53]
