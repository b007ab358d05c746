"""What a customer asked for, read back: the full date, and the year where the day lies nearly a year ahead."""

from __future__ import annotations

from datetime import date

import pytest

from followup.core.replies.contract import TimeWindow
from followup.core.told_times import phrase_window

TODAY = date(2026, 12, 14)


@pytest.mark.parametrize(
    ("start", "end", "grain", "en", "es"),
    [
        ("2026-12-15T09:00", None, "time", "Tuesday, December 15 at 9:00 AM", "martes 15 de diciembre a las 9:00 AM"),
        ("2027-11-26T07:30", "2027-11-26T18:00", "day", "Friday, November 26, 2027", "viernes 26 de noviembre de 2027"),
        ("T15:00", None, "time", "3:00 PM", "3:00 PM"),
    ],
)
def test_a_window_in_words(start: str, end: str | None, grain: str, en: str, es: str) -> None:
    window = TimeWindow.model_validate({"start": start, "end": end, "grain": grain})
    assert phrase_window(window, "en", TODAY) == en
    assert phrase_window(window, "es", TODAY) == es
