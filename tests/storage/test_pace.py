"""The pace of a number: kept in the database for all processes, never above the rate in any sliding second.

The rate of a long number (1 segment a second) and of a short code (100) are the provider's, from its error pages.
"""

from __future__ import annotations

import threading
import time
from datetime import UTC, datetime, timedelta

import pytest

from followup.storage import machine, pace, shops, tables
from followup.storage.store import Store, make_engine

NUMBER, OTHER = "+13125550101", "+13125550102"


@pytest.fixture
def store(database_url: str) -> Store:
    engine = make_engine(database_url)
    tables.metadata.create_all(engine)
    made = Store(engine)
    facts = {"name": "Elm Street Auto", "zone": "America/Chicago", "phone": "+13125550100", "texts_from": NUMBER}
    with made.write() as connection:
        assert shops.add_shop(connection, datetime(2026, 11, 24, tzinfo=UTC), "elm", facts) == 1
    return made


def _take(store: Store, number: str = NUMBER, segments: int = 1, rate: float = 1.0) -> bool:
    with store.write() as connection:
        return pace.take(connection, 1, number, segments, rate)


def _free_in(store: Store, number: str = NUMBER) -> float:
    with store.read() as connection:
        return pace.free_in(connection, 1, number)


def test_a_number_is_free_again_when_its_segments_have_gone_by(store: Store) -> None:
    assert _free_in(store) == 0
    assert _take(store, segments=3)
    assert 2.5 < _free_in(store) <= 3 * pace.SLOWER_BY
    assert not _take(store)
    assert _take(store, OTHER), "another number has a pace of its own"
    store.close()


def test_a_database_whose_clock_was_set_back_does_not_silence_a_number(
    store: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    assert _take(store)
    hour_ago = datetime.now(UTC) - timedelta(hours=1)  # noqa: TID251  # the database's clock is the real one
    monkeypatch.setattr(machine, "database_clock", lambda _connection: hour_ago)
    assert _free_in(store) == 0
    assert _take(store)
    store.close()


def test_no_sliding_second_holds_more_than_the_rate_however_many_send(store: Store) -> None:
    rate, wanted, left = 20.0, 50, []
    lock, over = threading.Lock(), threading.Event()

    def send() -> None:
        while not over.is_set():
            over.wait(_free_in(store))
            with store.write() as connection:
                taken_at = time.monotonic()
                taken = pace.take(connection, 1, NUMBER, 1, rate)
            if taken:
                with lock:
                    left.append(taken_at)
                    if len(left) >= wanted:
                        over.set()

    threads = [threading.Thread(target=send) for _ in range(4)]
    for one in threads:
        one.start()
    for one in threads:
        one.join(30)
    store.close()
    left.sort()
    assert len(left) >= wanted
    most = max(sum(at <= other < at + 1 for other in left) for at in left)
    print(f"most in a sliding second at {rate:g}/s: {most}; {len(left) / (left[-1] - left[0]):.1f}/s")
    assert most <= rate
    # It is a pace, not a crawl: the machine beside may slow it, not by half.
    assert left[-1] - left[0] < 2 * wanted / rate
