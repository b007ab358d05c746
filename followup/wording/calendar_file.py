"""Calendar entries as a file of iCalendar (RFC 5545): whatever somebody typed stays inside the property it stands in.

Instants are written in UTC, so that no zone needs to be described. The library folds lines at 75 octets and writes the
properties; texts are escaped here, because it takes a backslash before an N for a line break.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from datetime import datetime, timedelta

from icalendar import Calendar, Event, vText

from followup.core.calendar_entry import CalendarEntry

MADE_BY = "-//followup//shop calendar//EN"
# What RFC 5545 (3.1) allows in no text: control characters but the tab. A lone half of a pair is no character at all,
# and a mark of byte order is taken off by whoever reads.
_NO_TEXT = re.compile("[\x00-\x08\x0b-\x1f\x7f\ud800-\udfff\ufeff]")
LONGEST_WORDS = 2_000
# How often a calendar may fetch it again (RFC 7986, 5.7).
FETCH_EVERY = timedelta(minutes=15)


def plain(words: str) -> str:
    """The words as a calendar may hold them: line ends are line feeds, other control characters are left out."""
    return _NO_TEXT.sub("", words.replace("\r\n", "\n").replace("\r", "\n"))[:LONGEST_WORDS]


class _Words(vText):
    """A text that is escaped as RFC 5545, 3.3.11, says, and in no other way."""

    def to_ical(self) -> bytes:
        """Backslash, semicolon, comma and line feed each get a backslash before them."""
        escaped = str(self).replace("\\", "\\\\").replace(";", "\\;").replace(",", "\\,").replace("\n", "\\n")
        return escaped.encode("utf-8")


def calendar_file(name: str, entries: Iterable[CalendarEntry]) -> bytes:
    """The file; the same entries make the same bytes."""
    calendar = Calendar()
    calendar["VERSION"], calendar["PRODID"] = vText("2.0"), vText(MADE_BY)
    calendar["CALSCALE"] = vText("GREGORIAN")
    calendar["NAME"] = calendar["X-WR-CALNAME"] = _Words(plain(name))
    calendar.add("REFRESH-INTERVAL", FETCH_EVERY, parameters={"VALUE": "DURATION"})
    for entry in entries:
        calendar.add_component(_event(entry))
    return bytes(calendar.to_ical())


def _event(entry: CalendarEntry) -> Event:
    placed, event = entry.placed, Event()
    event["UID"] = _Words(plain(placed.uid))
    # Without a METHOD the stamp is when the entry was last changed (RFC 5545, 3.8.7.2); so nothing changes by itself.
    event.add("DTSTAMP", placed.booking.changed_at)
    event.add("LAST-MODIFIED", placed.booking.changed_at)
    event.add("SEQUENCE", placed.sequence)
    event.add("STATUS", placed.status)
    event.add("DTSTART", placed.at)
    if isinstance(placed.at, datetime):
        event.add("DTEND", placed.at + timedelta(minutes=entry.lasts_minutes))
    # A day on which no hour is agreed blocks nobody's time.
    is_busy = isinstance(placed.at, datetime) and placed.status != "CANCELLED"
    event["TRANSP"] = vText("OPAQUE" if is_busy else "TRANSPARENT")
    event["SUMMARY"] = _Words(plain(entry.title))
    event["DESCRIPTION"] = _Words(plain(entry.says))
    if entry.place:
        event["LOCATION"] = _Words(plain(entry.place))
    if entry.address:
        event.add("URL", "".join(plain(entry.address).split()))
    return event
