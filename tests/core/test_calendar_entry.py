"""Which entry a booking has in a calendar. Source of the states: the trade rules; of UID and SEQUENCE: RFC 5545."""

from __future__ import annotations

from datetime import UTC, date, datetime

import pytest

from followup.core.booking import STATES
from followup.core.calendar_entry import Booked, place

AT = datetime(2026, 12, 1, 15, tzinfo=UTC)
LATER = datetime(2026, 12, 3, 16, tzinfo=UTC)
CHANGED = datetime(2026, 11, 24, 15, tzinfo=UTC)


def booked(number: int = 1, state: str = "confirmed", version: int = 1, **others: object) -> Booked:
    """A booking at one time."""
    values = {"times": (AT,), **others}
    return Booked(number, state, version, CHANGED, **values)  # type: ignore[arg-type]  # a test's own values


@pytest.mark.parametrize(
    ("state", "status"),
    [("asked", "TENTATIVE"), ("offered", "TENTATIVE"), ("confirmed", "CONFIRMED"), ("kept", "CONFIRMED"),
     ("missed", "CONFIRMED"), ("closed", "CANCELLED")],
)  # fmt: skip
def test_every_state_has_its_status(state: str, status: str) -> None:
    assert [one.status for one in place([booked(state=state)], "x.example")] == [status]


def test_no_state_is_forgotten() -> None:
    for state in STATES:
        assert list(place([booked(state=state)], "x.example"))


def test_the_id_stays_and_the_sequence_grows_with_each_change() -> None:
    told = [next(place([booked(state=state, version=number)], "x.example"))
            for number, state in enumerate(("asked", "offered", "asked", "confirmed", "kept"), start=1)]  # fmt: skip
    assert {one.uid for one in told} == {"visit-1@x.example"}
    assert [one.sequence for one in told] == [0, 1, 2, 3, 4]


def test_offered_times_stand_beside_each_other() -> None:
    placed = list(place([booked(state="offered", times=(AT, LATER))], "x.example"))
    assert [one.uid for one in placed] == ["visit-1@x.example", "visit-1-2@x.example"]
    assert [one.at for one in placed] == [AT, LATER]


def test_a_day_without_an_hour_is_a_day_and_without_any_there_is_no_entry() -> None:
    day = date(2026, 12, 1)
    assert [one.at for one in place([booked(state="asked", times=(day,))], "x.example")] == [day]
    assert list(place([booked(state="asked", times=())], "x.example")) == []


def test_a_wish_for_another_time_stands_beside_the_old_one() -> None:
    old, wish = booked(1, "confirmed", 2), booked(2, "asked", 1, times=(LATER,))
    assert [(one.uid, one.status) for one in place([old, wish], "x.example")] == [
        ("visit-1@x.example", "CONFIRMED"),
        ("visit-2@x.example", "TENTATIVE"),
    ]


def test_a_move_keeps_the_id_through_several_and_counts_on() -> None:
    first = place([booked(1, "confirmed", 2)], "x.example")
    once = place(
        [booked(1, "closed", 3, was_moved=True), booked(2, "confirmed", 2, times=(LATER,), replaces=1)], "x.example"
    )
    twice = place(
        [
            booked(1, "closed", 3, was_moved=True),
            booked(2, "closed", 3, was_moved=True, replaces=1),
            booked(3, "confirmed", 2, replaces=2),
        ],
        "x.example",
    )
    found = [*first, *once, *twice]
    assert {one.uid for one in found} == {"visit-1@x.example"}
    assert [one.at for one in found] == [AT, LATER, AT]
    sequences = [one.sequence for one in found]
    assert sequences == sorted(set(sequences)), "what is told later has to count more"
