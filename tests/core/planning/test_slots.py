"""Free check-in times: what is used up, parts, held offers, closed days.

The grid of 15 minutes, 85 % of the labor hours and the hours of jobs are common practice, kept as the shop's rules.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from followup.core.items import ALL
from followup.core.planning.slots import (
    Parts,
    Taken,
    Wanted,
    free_times,
    hours_of,
    labor_left,
    missed_times,
    why_not_free,
)
from followup.core.shop import Shop, is_open
from tests.core.planning.cars import SHOP, shop

NOW = datetime(2026, 3, 10, 12, 0, tzinfo=UTC)  # Tuesday 7:00 in Chicago, before opening
DAY_END = NOW + timedelta(hours=15)
CHECK = Wanted({"general": 0.3})


def at(wall: str) -> datetime:
    """The instant of a wall time at the shop."""
    return datetime.fromisoformat(wall).replace(tzinfo=ZoneInfo(SHOP.zone)).astimezone(UTC)


def walls(times: list[datetime]) -> list[str]:
    """Wall times at the shop."""
    return [one.astimezone(ZoneInfo(SHOP.zone)).strftime("%a %H:%M") for one in times]


def free(taken: list[Taken], wanted: Wanted = CHECK, where: Shop = SHOP, until: datetime = DAY_END) -> list[str]:
    """The free times of the day as wall times."""
    return walls(free_times(where, taken, wanted, NOW, until))


def test_an_empty_day_has_a_slot_every_quarter_of_an_hour() -> None:
    times = free([])
    assert times[0] == "Tue 07:30" and times[1] == "Tue 07:45" and times[-1] == "Tue 17:45"
    assert len(times) == 42
    assert len(free_times(SHOP, [], CHECK, NOW, DAY_END, most=3)) == 3


def test_a_slot_is_an_advisors_and_two_advisors_have_two() -> None:
    taken = [Taken(at("2026-03-10T07:30"))]
    assert "Tue 07:30" not in free(taken)
    assert "Tue 07:30" in free(taken, where=shop(advisors_at_check_in=2))
    assert "Tue 07:30" in free(taken, replace(CHECK, needs=frozenset({"early_drop"}))), "a key drop needs no advisor"


def test_labor_hours_of_the_day_are_planned_to_85_per_cent_by_skill() -> None:
    # 8 brake hours x .85 = 6.8
    full = [Taken(at("2026-03-10T08:00"), {"brakes": 5.8})]
    assert labor_left(SHOP, date(2026, 3, 10), full)["brakes"] == pytest.approx(1.0)
    assert free(full, Wanted({"brakes": 1.0})) != []
    assert free(full, Wanted({"brakes": 1.1})) == []
    assert free(full, Wanted({"tires": 1.1})) != [], "another skill"
    assert why_not_free(SHOP, full, Wanted({"brakes": 1.5}), at("2026-03-10T10:00"), NOW) == (
        "not enough labor hours (brakes) on that day"
    )


def test_offered_times_count_while_they_are_held() -> None:
    held = Taken(at("2026-03-10T09:00"), held_until=NOW + timedelta(minutes=1))
    assert "Tue 09:00" not in free([held])
    nine = at("2026-03-10T09:00")
    lapsed = replace(held, held_until=NOW)
    assert "Tue 09:00" in free([lapsed]) and why_not_free(SHOP, [lapsed], CHECK, nine, NOW) is None
    assert why_not_free(SHOP, [held], CHECK, nine, NOW) == "no advisor is free to check the car in"


def test_what_is_past_or_closed_is_not_free() -> None:
    opening = at("2026-03-10T07:30")
    assert why_not_free(SHOP, [], CHECK, opening, opening) == "that time is past"
    assert why_not_free(SHOP, [], CHECK, at("2026-03-10T07:29"), NOW) == "the shop is closed then"
    assert why_not_free(SHOP, [], CHECK, at("2026-03-10T18:00"), NOW) == "the shop is closed then"
    assert walls(free_times(SHOP, [], CHECK, opening, DAY_END))[0] == "Tue 07:45"


def test_whoever_waits_needs_a_place_and_is_done_before_closing() -> None:
    waits = Wanted({"general": 1.0}, frozenset({"wait"}))
    one_place = shop(waiting_places=1, advisors_at_check_in=4)
    taken = [Taken(at("2026-03-10T09:00"), {"general": 1.0}, frozenset({"wait"}))]
    times = free(taken, waits, one_place)
    assert "Tue 08:00" in times and "Tue 08:15" not in times and "Tue 09:45" not in times and "Tue 10:00" in times
    assert times[-1] == "Tue 17:00"


def test_loaners_are_for_the_day_and_shuttle_seats_for_half_of_it() -> None:
    loaner = Taken(at("2026-03-10T08:00"), needs=frozenset({"loaner"}))
    assert free([loaner], Wanted({}, frozenset({"loaner"}))) == []
    riders = [Taken(at(f"2026-03-10T08:{minute}"), needs=frozenset({"ride"})) for minute in ("00", "15")]
    times = free(riders, Wanted({}, frozenset({"ride"})))
    assert times[0] == "Tue 12:00"
    at_noon = [replace(one, starts_at=at(f"2026-03-10T12:{n:02}")) for n, one in enumerate(riders)]
    assert free(at_noon, Wanted({}, frozenset({"ride"})))[-1] == "Tue 11:45"


@pytest.mark.parametrize(
    ("parts", "first"),
    [
        (Parts("not_needed"), "Tue 07:30"),
        (Parts("in_stock"), "Tue 07:30"),
        (Parts("ordered", due_on=date(2026, 3, 12)), "Fri 07:30"),
        (Parts("ordered", due_on=date(2026, 3, 13)), "Sat 08:00"),
        (Parts("ordered", due_on=date(2026, 3, 14)), "Mon 07:30"),
        (Parts("ordered", due_on=date(2026, 3, 1)), "Wed 07:30"),
        (Parts("order", order_days=2), "Fri 07:30"),
        (Parts("order"), None),
        (Parts("ordered"), None),
        (Parts("unknown"), None),
    ],
)
def test_no_time_before_the_parts_and_one_working_day(parts: Parts, first: str | None) -> None:
    times = free([], replace(CHECK, parts=parts), until=NOW + timedelta(days=9))
    assert (times[0] if times else None) == first


def test_closed_days_and_holidays_have_no_times() -> None:
    # 5 U.S.C. 6103(a): the last Monday of May is a holiday, in 2026 the 25th.
    friday = at("2026-05-22T17:50")
    times = walls(free_times(SHOP, [], CHECK, friday, friday + timedelta(days=5)))
    assert times[0] == "Sat 08:00" and not any(one.startswith(("Sun", "Mon")) for one in times)
    closed = shop(closed_on=["2026-03-10"])
    assert free([], where=closed) == []


def test_only_the_windows_that_suit() -> None:
    window = (at("2026-03-10T13:00"), at("2026-03-10T14:00"))
    assert free([], replace(CHECK, windows=(window,))) == ["Tue 13:00", "Tue 13:15", "Tue 13:30", "Tue 13:45"]


def test_the_same_job_on_two_wheels_is_one_job() -> None:
    by_code = {item.code: item for item in ALL}
    tread = by_code["tire_tread"]
    assert hours_of([tread, tread]) == hours_of([tread]) == {tread.job.skill: tread.job.hours}


takens = st.builds(
    Taken,
    st.integers(0, 60).map(lambda quarter: at("2026-03-10T07:30") + timedelta(minutes=15 * quarter)),
    st.dictionaries(st.sampled_from(["general", "brakes"]), st.floats(0, 3), max_size=2),
    st.frozensets(st.sampled_from(["wait", "ride", "loaner"]), max_size=2),
)
wanteds = st.builds(
    Wanted,
    st.dictionaries(st.sampled_from(["general", "brakes"]), st.floats(0.1, 3), min_size=1),
    st.frozensets(st.sampled_from(["wait", "ride", "loaner"]), max_size=2),
)


@given(st.lists(takens, max_size=12), wanteds)
def test_taking_a_free_time_breaks_no_limit(taken: list[Taken], wanted: Wanted) -> None:
    for start in free_times(SHOP, taken, wanted, NOW, DAY_END)[:5]:
        assert is_open(SHOP, start)
        assert why_not_free(SHOP, taken, wanted, start, NOW) is None
        after = [*taken, Taken(start, wanted.hours, wanted.needs)]
        left = labor_left(SHOP, date(2026, 3, 10), after)
        assert all(left[skill] >= -1e-6 for skill in wanted.hours)
        assert why_not_free(SHOP, after, wanted, start, NOW) is not None, "one advisor checks in one car"
        if "loaner" in wanted.needs:
            assert sum("loaner" in one.needs for one in after) <= SHOP.rules.loaners


def test_a_time_that_was_named_and_is_not_free_says_why() -> None:
    """Who waits for five hours of work cannot come at three: the advisor who offers another time knows what to say."""
    three, morning = at("2026-03-10T15:00"), at("2026-03-10T08:00")
    point = (three, three + timedelta(minutes=SHOP.rules.check_in_minutes))
    waits = Wanted({"brakes": 3.0, "general": 2.0}, frozenset({"wait"}), windows=(point, (morning, three)))
    (missed,) = missed_times(SHOP, [], waits, NOW)
    assert (missed.start, missed.because) == (three, "the work would not be done before closing")
    full = [Taken(morning, {"brakes": 6.0})]
    by_point, by_stretch = missed_times(SHOP, full, waits, NOW)
    assert by_point.because == "not enough labor hours (brakes) on that day"
    assert (by_stretch.start, by_stretch.end, by_stretch.because) == (morning, three, None)
    assert list(missed_times(SHOP, [], replace(waits, needs=frozenset()), NOW)) == []
