"""Several senders on one database, beside a writer that does not rest, or with their connections cut at random.

The bar is this project's own: no row is sent twice, every row is done, no process ends by itself.
"""

from __future__ import annotations

import os
import signal
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import timedelta
from random import Random

import pytest
from sqlalchemy.engine import make_url

from followup.rehearsal.faults.fate import Fates
from followup.rehearsal.faults.judge import Struck, is_open, judge
from followup.rehearsal.faults.nursery import Nursery
from followup.rehearsal.faults.provider import Provider
from followup.rehearsal.faults.shop import BEGINS_AT, Shop
from followup.rehearsal.faults.trial import DUE_BY, ENDS_AT, Plan, run
from followup.rehearsal.faults.worker import Order
from followup.storage import machine, outbox, shops
from followup.storage.rows import Row
from followup.storage.store import Store, make_engine
from tests.databases import PORT, USER
from tests.faults.ground import SEED, Ground


@contextmanager
def _hot_writer(shop: Shop) -> Iterator[None]:
    """Another process's small transactions, with the pause that background writers of this program make."""
    over, store = threading.Event(), Store(make_engine(shop.url))

    def write() -> None:
        while not over.wait(0.005):
            with store.write() as connection:
                machine.beat(connection, ["a hot writer"], BEGINS_AT)

    thread = threading.Thread(target=write)
    thread.start()
    try:
        yield
    finally:
        over.set()
        thread.join()
        store.close()


@pytest.mark.parametrize("beside", [1, 3])
def test_senders_side_by_side_beside_a_hot_writer(ground: Ground, beside: int) -> None:
    with ground.shop("sqlite") as shop, _hot_writer(shop):
        assert run(Plan(SEED + beside, beside=beside), shop, ground.nursery).is_clean


@pytest.mark.parametrize("beside", [1, 3])
def test_senders_side_by_side_on_postgresql(both: Ground, beside: int) -> None:
    assert both.run(Plan(SEED + beside, beside=beside), "postgresql").is_clean


@pytest.mark.faults
def test_no_process_ends_and_nothing_is_sent_twice_while_connections_are_cut(both: Ground) -> None:
    cut = 0
    for seed in range(SEED, SEED + 2):
        with both.shop("postgresql") as shop:
            cut += _with_cut_connections(seed, shop, both.nursery)
    assert cut >= 23
    print(f"connections cut: {cut}")


def _with_cut_connections(seed: int, shop: Shop, nursery: Nursery) -> int:
    """Four processes that tick, until every text is done; how many of their connections were cut."""
    at, cut = BEGINS_AT, 0
    with Provider(Fates(seed), lambda: at) as provider:
        shop.set_clock(at)
        orders = [Order(("work",), shop.environment(provider.address), str(shop.folder / f"log{n}")) for n in range(4)]
        pids = [nursery.start(order) for order in orders]
        random, pause = Random(seed), threading.Event()
        while sum("ticking" in file.read_text() for file in shop.folder.glob("log?")) < len(pids):
            pause.wait(0.05)
        for _ in range(300):
            pause.wait(random.uniform(0.1, 0.3))
            cut += _cut_one(shop, random)
            if at < ENDS_AT:
                at += timedelta(seconds=150)
                shop.set_clock(at)
            elif not any(is_open(row, DUE_BY) for row in _texts(shop)):
                break
        ended = nursery.wait(pids, 0.1)
        assert ended == [], [file.read_text()[-2000:] for file in shop.folder.glob("log?")]
        for pid in pids:
            os.kill(pid, signal.SIGTERM)
        for pid in pids:
            assert [one.number for one in nursery.wait([pid], 30)] == [0]
        verdict = judge(seed, _texts(shop), [], provider, Struck(cut), DUE_BY)
    # No pages run here, so that no report comes: what its words or the list do not tell is held.
    assert (verdict.lost, verdict.duplicated, verdict.open) == (0, 0, 0), verdict
    return cut


def _texts(shop: Shop) -> list[Row]:
    store = Store(make_engine(shop.url))
    with store.read() as connection:
        found = outbox.texts_of_shop(connection, shops.shop_codes(connection)[0][0])
    store.close()
    return found


def _cut_one(shop: Shop, random: Random) -> int:
    import psycopg

    url = make_url(shop.url)
    with psycopg.connect(host=str(url.query["host"]), port=PORT, user=USER, dbname="postgres", autocommit=True) as link:
        query = "SELECT pid FROM pg_stat_activity WHERE datname = %s ORDER BY pid"
        found = [row[0] for row in link.execute(query, (url.database,)).fetchall()]
        if not found:
            return 0
        link.execute("SELECT pg_terminate_backend(%s)", (random.choice(found),))
    return 1
