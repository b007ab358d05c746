"""The health page: red after three missed ticks, and within 10 s where the database is away. Bars: this project's own.

That a database which cannot be written turns it red among real processes: `tests/faults/test_database_away.py`.
"""

from __future__ import annotations

import threading
import time
from collections.abc import Iterator
from datetime import timedelta
from typing import Any

import pytest
from flask.testing import FlaskClient

from followup import clock, scheduler
from followup.web.app import create_app
from followup.wiring import EVERY
from followup.workflows import look_at_health as looking
from tests.workflows.demo import Demo

WITHIN_SECONDS = 10


@pytest.fixture
def client(demo: Demo) -> Iterator[FlaskClient]:
    """Nobody in particular, on a shop whose ticks just ran."""
    scheduler.run_due(demo.house, "a test")
    with create_app(demo.house).test_client() as client:
        yield client


def _asked(client: FlaskClient) -> tuple[int, Any]:
    answer = client.get("/health")
    return answer.status_code, answer.json


def test_it_is_green_while_the_clock_ticks_and_red_after_three_missed_ticks(demo: Demo, client: FlaskClient) -> None:
    assert {tick.name: tick.every for tick in scheduler.TICKS if tick.name in EVERY} == EVERY
    for _ in range(5):
        clock.move_by(timedelta(seconds=1))
        scheduler.run_due(demo.house, "a test")
        assert _asked(client) == (200, {"is_ready": True, "because": []})
    # Ticks run every second: three were missed three seconds later, and the next moment tells it.
    clock.move_by(timedelta(seconds=3))
    assert _asked(client)[0] == 200
    clock.move_by(timedelta(seconds=1))
    assert _asked(client) == (503, {"is_ready": False, "because": [looking.CLOCK_STANDS]})
    scheduler.run_due(demo.house, "a test")
    assert _asked(client)[0] == 200


def test_a_clock_that_was_moved_back_is_red_until_the_next_tick(demo: Demo, client: FlaskClient) -> None:
    clock.move_by(timedelta(hours=-1))
    assert _asked(client)[0] == 503
    scheduler.run_due(demo.house, "a test")
    assert _asked(client)[0] == 200


def test_it_is_red_where_the_clock_never_ticked(demo: Demo) -> None:
    assert create_app(demo.house).test_client().get("/health").json["because"] == [looking.NEVER_TICKED]


def test_it_tells_nothing_about_the_shop(demo: Demo, client: FlaskClient) -> None:
    clock.move_by(timedelta(hours=1))
    shop = demo.house.shop(demo.shop_id)
    said = client.get("/health").text
    assert not any(word in said for word in (shop.name, shop.phone, shop.texts_from, demo.house.settings.database_url))


def test_a_database_that_stands_still_turns_it_red_in_time_and_holds_up_nobody(
    client: FlaskClient, monkeypatch: pytest.MonkeyPatch
) -> None:
    go_on = threading.Event()
    asks = looking.machine.last_beats

    def stuck(connection: Any) -> Any:
        go_on.wait(30)
        return asks(connection)

    monkeypatch.setattr(looking.machine, "last_beats", stuck)
    began = time.monotonic()
    assert _asked(client) == (503, {"is_ready": False, "because": [looking.DATABASE_IS_AWAY]})
    assert _asked(client)[0] == 503
    assert time.monotonic() - began < WITHIN_SECONDS
    go_on.set()
    deadline = time.monotonic() + WITHIN_SECONDS
    while _asked(client)[0] != 200:
        assert time.monotonic() < deadline
