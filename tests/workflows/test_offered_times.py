"""Times that are offered are free, stay free while they are held, and go back: on a real database, many at once.

Sources: this project's rules for the trade (a time is offered only if all that it needs is free; held for 24 hours).
"""

from __future__ import annotations

import threading
from collections import Counter as Tally
from concurrent.futures import ThreadPoolExecutor
from contextlib import suppress
from datetime import UTC, datetime, timedelta
from random import Random
from typing import Any

import pytest

from followup.core.planning.slots import Taken
from followup.core.shop import Shop
from followup.core.wall import to_wall
from followup.storage import requests, slots
from followup.storage.rows import Row
from followup.storage.store import Connection
from followup.workflows import settle_requests
from followup.workflows.settle_over_time import settle_over_time
from followup.workflows.settle_requests import NotFree, SomebodyWasFirst
from tests.workflows.counter import NOW, Counter, open_counter
from tests.workflows.demo import Demo

# Tuesday, December 1, 9:00 in the morning in Chicago.
NINE = datetime(2026, 12, 1, 15, 0, tzinfo=UTC)
HOUR = timedelta(hours=1)
TRIES, WORKERS, SEED = 200, 8, 20_261_201


@pytest.fixture
def counter(database_url: str) -> Counter:
    """The shop with its one customer, on SQLite and where it is found on PostgreSQL."""
    return open_counter(database_url)


def _offer(counter: Counter, request_id: int, *starts: datetime, at: datetime = NOW) -> None:
    version = counter.request(request_id)["version"]
    settle_requests.offer_times(counter.store, counter.shop_id, request_id, version, starts, counter.by, at)


def _confirm(counter: Counter, request_id: int, start: datetime, at: datetime = NOW) -> None:
    version = counter.request(request_id)["version"]
    settle_requests.confirm_request(counter.store, counter.shop_id, request_id, version, start, counter.by, at)


def test_two_customers_are_never_offered_the_same_time(counter: Counter) -> None:
    first, second = counter.ask("nine"), counter.ask("nine too")
    _offer(counter, first, NINE, NINE + HOUR)
    with pytest.raises(NotFree, match="no advisor is free"):
        _offer(counter, second, NINE)
    assert counter.request(second)["state"] == "asked"
    _offer(counter, second, NINE + 2 * HOUR)


def test_an_advisor_cannot_give_away_what_is_held_and_what_was_taken_meanwhile_is_not_offered(counter: Counter) -> None:
    first, second = counter.ask("nine"), counter.ask("nine too")
    _offer(counter, first, NINE)
    with pytest.raises(NotFree):
        settle_requests.book_by_phone(
            counter.store, counter.shop_id, counter.person_id, counter.vehicle_id, NINE, [], counter.by, NOW
        )
    settle_requests.book_by_phone(
        counter.store, counter.shop_id, counter.person_id, counter.vehicle_id, NINE + HOUR, [], counter.by, NOW
    )
    with pytest.raises(NotFree):
        _offer(counter, second, NINE + HOUR)


def test_what_was_not_taken_goes_back_when_its_hold_is_over(counter: Counter) -> None:
    first, second = counter.ask("nine"), counter.ask("nine too")
    _offer(counter, first, NINE)
    almost, over = NOW + timedelta(hours=24, seconds=-1), NOW + timedelta(hours=24)
    with pytest.raises(NotFree):
        _confirm(counter, second, NINE, almost)
    assert settle_over_time(counter.store, counter.shop_id, almost) == 0
    # Free at the very end of its hold, whether or not the clock has settled it yet.
    _confirm(counter, second, NINE, over)
    assert settle_over_time(counter.store, counter.shop_id, over) == 1
    given_back = counter.request(first)
    assert (given_back["state"], given_back["offered"], given_back["offered_until"]) == ("asked", [], None)
    assert {one["reason"]: one["state"] for one in counter.texts()}["offer_times"] == "dropped"
    with pytest.raises(NotFree):
        _confirm(counter, first, NINE, over)


@pytest.mark.parametrize("end", ["kept", "missed"])
def test_the_hours_of_who_came_or_was_missed_today_are_not_given_away_again_today(counter: Counter, end: str) -> None:
    """Six hours of brakes fit a day that holds 6.8; on the next day as many are free again."""
    made = [counter.ask(f"car {number}") for number in range(8)]
    for number, one in enumerate(made[:6]):
        _confirm(counter, one, NINE + number * HOUR / 2)
    assert sum(counter.request(one)["hours"].get("brakes", 0.0) for one in made[:6]) > 6.8 - 1.4
    later = NINE + 4 * HOUR
    for one in made[:6]:
        version = counter.request(one)["version"]
        settle_requests.end_booking(counter.store, counter.shop_id, one, version, end, counter.by, later)
    with pytest.raises(NotFree, match="not enough labor hours"):
        for one in made[6:]:
            _confirm(counter, one, later + (made.index(one) - 5) * HOUR / 2, later)
    _confirm(counter, made[7], NINE + timedelta(days=1), later)


def test_only_times_that_were_checked_are_offered(counter: Counter) -> None:
    """Of four times the earliest three are offered; the earliest of these is not free."""
    made, other = counter.ask("any"), counter.ask("other")
    _confirm(counter, other, NINE)
    with pytest.raises(NotFree):
        _offer(counter, made, NINE + 3 * HOUR, NINE + 2 * HOUR, NINE + HOUR, NINE)


def test_what_a_customer_chose_stays_free_until_an_advisor_had_a_day_to_confirm_it(demo: Demo) -> None:
    """Offered by text, taken by text: nobody else gets it before the advisor confirms."""
    invite = demo.a_planned_invite()
    demo.run("2026-11-23T11:30")
    demo.write(invite["number"], "yes, monday at 2 pm")
    demo.run()
    mine = _of_number(demo, invite["phone_id"])
    by = settle_requests.By(demo.owner()[0], "Avery Stone")
    settle_requests.set_parts(
        demo.house.store, demo.shop_id, mine["id"], mine["version"], "in_stock", None, by, demo.house.now()
    )
    mine = _of_number(demo, invite["phone_id"])
    times = [datetime(2026, 12, 1, 16 + hour, 0, tzinfo=UTC) for hour in range(2)]
    settle_requests.offer_times(
        demo.house.store, demo.shop_id, mine["id"], mine["version"], times, by, demo.house.now()
    )
    demo.run("2026-11-23T12:30")
    demo.write(invite["number"], "the second one")
    demo.run()
    mine = _of_number(demo, invite["phone_id"])
    assert (mine["state"], mine["slot_at"]) == ("asked", times[1])
    # 24 hours are over on Tuesday; the advisor has that working day.
    assert to_wall(mine["offered_until"], demo.zone).strftime("%a %H:%M") == "Tue 18:00"
    with demo.house.store.read() as connection:
        shop, later = demo.house.shop(demo.shop_id), demo.house.now() + timedelta(hours=24)
        used = [one.starts_at for one in slots.taken(connection, shop, later)]
        after = [one.starts_at for one in slots.taken(connection, shop, mine["offered_until"])]
    assert times[1] in used and times[0] not in used
    assert times[1] not in after


def _of_number(demo: Demo, phone_id: int) -> dict[str, Any]:
    with demo.house.store.read() as connection:
        found = requests.requests_of_shop(connection, demo.shop_id, requests.OPEN)
    return next(row for row in found if row["phone_id"] == phone_id)


def test_200_tries_at_once_give_no_time_away_twice(counter: Counter) -> None:
    """Eight at a time offer, confirm and book by phone the same ten times of a day; brakes have 6.8 hours on it."""
    draw = Random(SEED)
    starts = [NINE + timedelta(minutes=30 * number) for number in range(10)]
    made = [counter.ask(f"try {number}") for number in range(TRIES)]
    plan = [(one, draw.choice(starts), draw.choice(("offer", "confirm", "confirm", "phone"))) for one in made]
    with ThreadPoolExecutor(WORKERS) as pool:
        ends = Tally(pool.map(lambda one: _try(counter, *one), plan))
    assert ends["done"] + ends["not free"] == TRIES
    with counter.store.read() as connection:
        held = slots.taken(connection, counter.shop(), NOW)
    at = Tally(one.starts_at for one in held)
    assert max(at.values()) == 1, f"given away twice: {at}"
    assert sum(one.hours.get("brakes", 0.0) for one in held) <= 6.8
    assert ends["done"] == len(held) >= 6


def _try(counter: Counter, request_id: int, start: datetime, how: str) -> str:
    try:
        if how == "offer":
            _offer(counter, request_id, start)
        elif how == "confirm":
            _confirm(counter, request_id, start)
        else:
            settle_requests.book_by_phone(
                counter.store, counter.shop_id, counter.person_id, counter.vehicle_id, start,
                [("brake_pad", "front_left")], counter.by, NOW,
            )  # fmt: skip
    except NotFree:
        return "not free"
    except SomebodyWasFirst:
        return "somebody was first"
    return "done"


@pytest.mark.parametrize("is_locked", [True, False])
def test_without_the_lock_two_would_find_the_same_time_free(
    postgresql_url: str, monkeypatch: pytest.MonkeyPatch, is_locked: bool
) -> None:
    """Both look before either writes: with the lock the second waits and finds it taken, without it is booked twice."""
    counter = open_counter(postgresql_url)
    made = [counter.ask("one"), counter.ask("two")]
    both, looked = threading.Barrier(2), slots.taken

    def look_together(connection: Connection, shop: Shop, now: datetime, *, but: Row | None = None) -> list[Taken]:
        found = looked(connection, shop, now, but=but)
        with suppress(threading.BrokenBarrierError):
            both.wait(1)
        return found

    monkeypatch.setattr(slots, "taken", look_together)
    if not is_locked:
        monkeypatch.setattr(slots, "lock", lambda *_: None)
    with ThreadPoolExecutor(2) as pool:
        ends = list(pool.map(lambda one: _try(counter, one, NINE, "confirm"), made))
    assert sorted(ends) == (["done", "not free"] if is_locked else ["done", "done"])
