"""Files of iCalendar: whatever stands in a field stays in it. Source: RFC 5545; the reader is written from it alone."""

from __future__ import annotations

import re
from datetime import UTC, date, datetime

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from icalendar import Calendar

from followup.core.calendar_entry import Booked, CalendarEntry, place
from followup.wording.calendar_file import LONGEST_WORDS, calendar_file, plain
from tests.calendar_reader import read

AT = datetime(2026, 12, 1, 15, tzinfo=UTC)
CHANGED = datetime(2026, 11, 24, 15, 30, 12, tzinfo=UTC)
PROPERTIES = {
    "UID", "DTSTAMP", "LAST-MODIFIED", "SEQUENCE", "STATUS", "DTSTART", "DTEND", "TRANSP", "SUMMARY", "DESCRIPTION",
    "LOCATION", "URL",
}  # fmt: skip
# What breaks out of a property where somebody forgot to escape: separators, folds, line ends of every kind.
_BREAKS = ["\r\n", "\n", "\r", "\r\n ", "\n\t", "\\", "\\n", "\\N", "\\;", ";", ",", ":", '"', "\x00", "\x0b", "\x0c",
           "\x1b", "\x7f", "\x85", "\u2028", "\u2029", "\ufeff", "BEGIN:VEVENT", "END:VEVENT", "ATTENDEE:mailto:x",
           "DTSTART:20200101T000000Z", "ñ", "日本語", "\U0001f527", "e\u0301"]  # fmt: skip
WORDS = st.lists(st.one_of(st.sampled_from(_BREAKS), st.text(max_size=40)), max_size=12).map("".join)
LINK = "https://texts.example.com/advisor/requests/7"


def entry(title: str = "blue wagon", says: str = "State: confirmed", where: str = "12 Quill Lane") -> CalendarEntry:
    """One confirmed booking with these words."""
    (placed,) = place([Booked(7, "confirmed", 3, CHANGED, (AT,))], "texts.example.com")
    return CalendarEntry(placed, title, says, 15, where, LINK)


def _nothing_is_injected(name: str, title: str, says: str, where: str) -> None:
    calendar = read(calendar_file(name, [entry(title, says, where)]))
    (event,) = calendar.inside
    assert event.names == sorted(PROPERTIES - (set() if where else {"LOCATION"}))
    assert event.inside == []
    assert calendar.names == sorted(("VERSION", "PRODID", "CALSCALE", "NAME", "X-WR-CALNAME", "REFRESH-INTERVAL"))
    assert (event.text("SUMMARY"), event.text("DESCRIPTION")) == (plain(title), plain(says))
    assert calendar.text("NAME") == calendar.text("X-WR-CALNAME") == plain(name)
    if where:
        assert event.text("LOCATION") == plain(where)
    assert event.value("UID") == "visit-7@texts.example.com"
    assert event.value("DTSTART") == "20261201T150000Z"


@pytest.mark.parametrize("examples", [500, pytest.param(10_000, marks=pytest.mark.faults)])
def test_no_property_is_injected_and_the_words_come_back(examples: int) -> None:
    settings(max_examples=examples)(given(WORDS, WORDS, WORDS, WORDS)(_nothing_is_injected))()


@given(WORDS)
def test_only_what_no_calendar_can_hold_is_left_out(words: str) -> None:
    """RFC 5545, 3.1 and 3.3.11: a text holds every character but control characters; line ends are one line feed.
    A mark of byte order is none (RFC 3629, 6)."""
    kept = plain(words)
    assert kept == re.sub("[\x00-\x08\x0b-\x1f\x7f\ufeff]", "", re.sub("\r\n?", "\n", words))[:LONGEST_WORDS]
    assert plain(kept) == kept


def test_half_a_character_breaks_nothing() -> None:
    (event,) = read(calendar_file("x", [entry("a\ud800b")])).inside
    assert event.text("SUMMARY") == "ab"


def test_another_reader_finds_the_same() -> None:
    file = calendar_file("Elm Street Auto", [entry("blue wagon; the old one, with \\ in it", "one\ntwo")])
    (event,) = Calendar.from_ical(file).walk("VEVENT")
    assert event["SUMMARY"] == "blue wagon; the old one, with \\ in it"
    assert event["DESCRIPTION"] == "one\ntwo"
    assert event.decoded("DTSTART") == AT
    assert (event.decoded("DTEND") - AT).total_seconds() == 15 * 60
    assert event.decoded("LAST-MODIFIED") == event.decoded("DTSTAMP") == CHANGED
    assert (event["SEQUENCE"], event["STATUS"], event["URL"]) == (2, "CONFIRMED", LINK)


def test_a_day_without_an_hour_is_written_as_a_day_and_blocks_nobody() -> None:
    (placed,) = place([Booked(7, "asked", 1, CHANGED, (date(2026, 12, 1),))], "texts.example.com")
    (event,) = read(calendar_file("x", [CalendarEntry(placed, "a", "b", 15)])).inside
    assert ("DTSTART", {"VALUE": "DATE"}, "20261201") in event.properties
    assert "DTEND" not in event.names
    assert (event.value("TRANSP"), event.value("STATUS")) == ("TRANSPARENT", "TENTATIVE")


@pytest.mark.parametrize("how_many", [0, 1, 200])
def test_the_same_bookings_make_the_same_bytes(how_many: int) -> None:
    assert calendar_file("x", [entry()] * how_many) == calendar_file("x", [entry()] * how_many)
