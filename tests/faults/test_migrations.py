"""A migration is killed on the way, and pages of the earlier version are read meanwhile: up or down, never in between.

Source: this project's own bars (20 kills; no answer of 500 or more to who reads).
"""

from __future__ import annotations

import threading
from collections import Counter
from collections.abc import Iterator
from contextlib import contextmanager
from random import Random

import pytest
from alembic import command
from flask.testing import FlaskClient
from sqlalchemy import Engine, inspect, text

from followup.rehearsal.demo_shop import PASSWORD
from followup.rehearsal.faults.shop import BEGINS_AT, Shop, demo_address
from followup.rehearsal.faults.worker import Order
from followup.storage import schema
from followup.storage.store import make_engine
from followup.transports.transport import InboundText
from followup.web.app import create_app
from followup.wiring import House, open_house
from followup.workflows.keep_inbound import keep_inbound
from tests.faults import next_version
from tests.faults.ground import SEED, Ground
from tests.web.conftest import token_on

# Before it, tables that others refer to are made anew on SQLite.
OLD = "0009"
PAGES = ("/", "/advisor/", "/advisor/requests", "/advisor/find?q=a", "/advisor/calls", "/manager/", "/owner/staff")
READERS = 3


def _version(engine: Engine) -> str:
    with engine.connect() as connection:
        return str(connection.execute(text("SELECT version_num FROM alembic_version")).scalar_one())


def _rows(engine: Engine) -> dict[str, int]:
    with engine.connect() as connection:
        names = [one for one in inspect(connection).get_table_names() if one != "alembic_version"]
        return {one: connection.execute(text(f'SELECT count(*) FROM "{one}"')).scalar_one() for one in names}


def _upgrade(ground: Ground, shop: Shop, at: str | None = None, nth: int = 1, **others: str) -> str:
    """Run `followup db upgrade` in a process, killed at that point; how it ended."""
    environment = shop.environment(demo_address(9), **others)
    change = "tests.faults.next_version:install" if others else None
    order = Order(("db", "upgrade"), environment, str(shop.folder / "db.log"), at=at, nth=nth, change=change)
    (ended,) = ground.nursery.wait([ground.nursery.start(order)], 60)
    assert ended.how == "killed" or not ended.number, (shop.folder / "db.log").read_text()
    return ended.how


def _kill_and_go_on(ground: Ground, kind: str, number: int) -> int:
    """Killed after so many of the migrations, then run again; whether it was killed."""
    random = Random(f"{SEED} migration {number}")
    with ground.shop(kind) as shop:
        engine = make_engine(shop.url)
        with schema.migrating(engine) as connection:
            command.downgrade(schema._config(connection), OLD)
        before = _rows(engine)
        at = "migrated" if number % 5 == 4 else "version written"
        how = _upgrade(ground, shop, at, random.randint(1, 6) if at != "migrated" else 1)
        # All or nothing.
        whole = {**before, **{name: count for name, count in _rows(engine).items() if name not in before}}
        if at == "migrated":
            assert _version(engine) != OLD and _rows(engine) == whole
        else:
            assert _version(engine) == OLD and _rows(engine) == before
        assert _upgrade(ground, shop) == "exited"
        assert {name: _rows(engine)[name] for name in before} == before
        with engine.connect() as connection:
            assert schema.differences(connection) == []
            if kind == "sqlite":
                assert connection.exec_driver_sql("PRAGMA foreign_key_check").all() == []
        engine.dispose()
    return how == "killed"


@pytest.mark.parametrize("kind", ["sqlite", "postgresql"])
def test_a_migration_that_was_killed_is_whole_or_has_not_been(both: Ground, kind: str) -> None:
    assert sum(_kill_and_go_on(both, kind, number) for number in (3, 4)) == 2


@pytest.mark.faults
@pytest.mark.parametrize("kind", ["sqlite", "postgresql"])
def test_twenty_migrations_that_were_killed(both: Ground, kind: str) -> None:
    assert sum(_kill_and_go_on(both, kind, number) for number in range(20)) == 20


def _read_for_ever(client: FlaskClient, ended: threading.Event, found: Counter[int], wrong: list[str]) -> None:
    place = 0
    while not ended.is_set():
        address = PAGES[place % len(PAGES)]
        status = client.get(address).status_code
        found[status] += 1
        if status >= 500:
            wrong.append(f"{address}: {status}")
        place += 1


@contextmanager
def _readers(house: House) -> Iterator[tuple[Counter[int], list[str]]]:
    """People who read pages of this version all the time."""
    app, ended = create_app(house), threading.Event()
    found: Counter[int] = Counter()
    wrong: list[str] = []
    clients = []
    for _ in range(READERS):
        client = app.test_client()
        form = {"login": "ines", "password": PASSWORD, "csrf_token": token_on(client, "/sign-in")}
        assert client.post("/sign-in", data=form).status_code == 303
        clients.append(client)
    threads = [threading.Thread(target=_read_for_ever, args=(one, ended, found, wrong)) for one in clients]
    for thread in threads:
        thread.start()
    try:
        yield found, wrong
    finally:
        ended.set()
        for thread in threads:
            thread.join()


def _go_side_by_side(ground: Ground, kind: str, kills: int, monkeypatch: pytest.MonkeyPatch) -> Counter[int]:
    """A process of the next version migrates under the pages of this one, killed so often before it is done."""
    with ground.shop(kind) as shop:
        shop.set_clock(BEGINS_AT)
        monkeypatch.setenv("FOLLOWUP_CLOCK", str(shop.folder / "clock"))
        house = open_house(shop.settings())
        later = next_version.write(shop.folder)
        with _readers(house) as (found, wrong):
            for _ in range(kills):
                assert _upgrade(ground, shop, "version written", **later) == "killed"
                assert _version(house.store.engine) != next_version.REVISION
            assert _upgrade(ground, shop, **later) == "exited"
            # What was read before counts for little: those who read go on for a while.
            enough = sum(found.values()) + 10 * READERS
            for _ in range(600):
                if sum(found.values()) >= enough:
                    break
                threading.Event().wait(0.05)
        assert _version(house.store.engine) == next_version.REVISION
        assert wrong == []
        # A process of the earlier version that starts now leaves the database as it is, and goes on writing.
        house.upgrade_database()
        assert _version(house.store.engine) == next_version.REVISION
        sender, to = "+12065550118", house.shop(1).texts_from
        assert keep_inbound(house.store, InboundText("SM" + "e" * 32, sender, to, "hello"), house.now()).inbound_id
        house.close()
    return found


@pytest.mark.parametrize("kind", ["sqlite", "postgresql"])
def test_pages_are_read_while_a_later_version_migrates(
    both: Ground, kind: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    found = _go_side_by_side(both, kind, 3, monkeypatch)
    assert found[200] > 20


@pytest.mark.faults
@pytest.mark.parametrize("kind", ["sqlite", "postgresql"])
def test_pages_are_read_while_twenty_migrations_are_killed(
    both: Ground, kind: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    found = _go_side_by_side(both, kind, 20, monkeypatch)
    print(f"{kind}: answers {dict(found)}")
    assert found[200] > 100
