"""The shop moves to PostgreSQL: every row, where ids go on, the ledger's guard; the old file keeps and sends nothing.

Source: this project's own bars; sequences and triggers are asked of PostgreSQL's own catalogue.
"""

from __future__ import annotations

import json
import logging
from pathlib import Path

import pytest
from click.testing import CliRunner
from sqlalchemy import func, inspect, select, text
from sqlalchemy.exc import DBAPIError

from followup import scheduler
from followup.cli import main
from followup.settings import Settings
from followup.storage import installation, machine, moving, outbox, rows, schema, shops, tables
from followup.storage.store import DatabaseMoved, Store, make_engine
from followup.web.app import create_app
from followup.wiring import House, open_house
from followup.workflows.move_database import MoveRefused, move_database
from followup.workflows.take_over import take_over, where_it_is
from tests.workflows.demo import Demo

# What belongs to the processes, and marks: what is copied sets them anew.
_STAYS = {"leases", "installation", "plan_marks", "forecast_marks", "plan_looks"}


def _move(demo: Demo, url: str) -> None:
    house = demo.house
    moved = move_database(house.store, url, house.now(), "ann", lambda _words: None, lambda _seconds: None)
    assert all(one.is_same for one in moved.tables)


def _open_at(demo: Demo, url: str) -> House:
    return open_house(Settings.model_validate({**demo.house.settings.model_dump(), "database_url": url}))


def _queue_up(demo: Demo) -> dict[str, int]:
    """One text in each state that a process may have left it in; their ids by the state."""
    with demo.house.store.write() as connection:
        queued = [row["id"] for row in outbox.queued_texts(connection, demo.shop_id)][:3]
        later = machine.database_now(connection)
        for state, text_id in zip(("claimed", "in_flight", "held"), queued, strict=True):
            outbox.change_text(connection, text_id, state=state, claimed_by="w", claimed_until=later)
    return dict(zip(("claimed", "in_flight", "held"), queued, strict=True))


def test_every_row_moves_and_ids_go_on(full: Demo, postgresql_url: str, tmp_path: Path) -> None:
    """On a shop in which something of everything happened: hardly a table is empty."""
    told = tmp_path / "moved.json"
    done = CliRunner().invoke(main, ["db", "move", postgresql_url, "--who", "ann", "--json", str(told)])
    assert done.exit_code == 0, done.output
    found = {one["name"]: one for one in json.loads(told.read_text())["tables"]}
    assert set(found) == {one.name for one in tables.metadata.sorted_tables} - _STAYS
    there = Store(make_engine(postgresql_url))
    with full.house.store.read() as old, there.write() as new:
        for name, one in found.items():
            table = tables.metadata.tables[name]
            counted = [link.execute(select(func.count()).select_from(table)).scalar_one() for link in (old, new)]
            # The move itself is a line of the new audit trail.
            assert counted == [one["here"], one["there"] + (name == "audit")]
            # Compared by another way than the checksum.
            keys = list(table.primary_key.columns)
            wanted = rows.every(old, select(table).order_by(*keys))
            assert rows.every(new, select(table).order_by(*keys))[: len(wanted)] == wanted
        assert schema.differences(new) == []
        assert sum(one["here"] > 0 for one in found.values()) > 30
        for name, seen in {one.name: inspect(new).get_pk_constraint(one.name) for one in moving.moved_tables()}.items():
            if seen["constrained_columns"] == ["id"]:
                highest = new.execute(text(f'SELECT coalesce(max(id), 0) FROM "{name}"')).scalar_one()
                assert (
                    new.execute(text(f"SELECT nextval(pg_get_serial_sequence('{name}', 'id'))")).scalar_one() > highest
                )
    for change in ("UPDATE consents SET event = 'narrowed'", "DELETE FROM consents"):
        with pytest.raises(DBAPIError, match="the consent ledger only grows"), there.write() as new:
            new.execute(text(change))
    there.close()


def test_what_was_under_way_is_planned_or_unknown_there(demo: Demo, postgresql_url: str) -> None:
    demo.run()
    queued = _queue_up(demo)
    _move(demo, postgresql_url)
    new = _open_at(demo, postgresql_url)
    with new.store.read() as connection:
        found = {state: outbox.load_text(connection, one) for state, one in queued.items()}
    assert {state: row and row["state"] for state, row in found.items()} == {
        "claimed": "planned", "in_flight": "unknown", "held": "held",
    }  # fmt: skip
    assert found["in_flight"] is not None and found["in_flight"]["look_at"] > demo.house.now()
    new.close()


def test_the_new_place_sends_and_the_old_one_does_not(demo: Demo, postgresql_url: str) -> None:
    demo.run()
    _move(demo, postgresql_url)
    new = Demo(_open_at(demo, postgresql_url), demo.shop_id)
    assert where_it_is(new.house.store).says == ""
    demo.at("2026-11-23T10:30")
    with pytest.raises(DatabaseMoved):
        demo.house.send(demo.shop_id)
    new.run()
    with new.house.store.read() as connection:
        assert [row["state"] for row in outbox.texts_of_shop(connection, demo.shop_id)].count("sent") > 10
    with pytest.raises(DatabaseMoved), demo.house.store.write() as connection:
        shops.note(connection, demo.shop_id, demo.house.now(), "ann", "tried", "")
    assert "moved to another one" in where_it_is(demo.house.store).says
    new.house.close()


def test_processes_of_the_old_place_say_so(demo: Demo, postgresql_url: str, caplog: pytest.LogCaptureFixture) -> None:
    demo.run()
    _move(demo, postgresql_url)
    # One that ticks ends by itself, one that is started ends at once.
    with caplog.at_level(logging.ERROR):
        scheduler._look(demo.house, "w", scheduler.Lanes(), scheduler.Acting(demo.house, "w"))
    assert demo.house.stopping.is_set() and "was moved away" in caplog.text
    assert CliRunner().invoke(main, ["work"]).exit_code == 1
    assert (
        CliRunner().invoke(main, ["db", "move", postgresql_url]).output.startswith("It had been moved there already.")
    )
    # Pages are read; what is posted is told that nothing was kept.
    client = create_app(demo.house).test_client()
    assert client.get("/sign-in").status_code == 200
    url, fields, headers = _written(demo)
    assert client.post("/hooks/texts", data=fields, headers=headers, base_url=url).status_code == 503
    # Somebody who wants the old one back can have it.
    assert take_over(demo.house.store, "ann", demo.house.now()) is not None
    assert client.post("/hooks/texts", data=fields, headers=headers, base_url=url).status_code == 204


def _written(demo: Demo) -> tuple[str, dict[str, str], dict[str, str]]:
    from followup.transports.local_phone import inbound_fields, signed_post, token_from

    settings = demo.house.settings
    fields = inbound_fields("+12065550118", demo.house.shop(demo.shop_id).texts_from, "hello")
    signed = signed_post(f"{settings.public_base_url}/hooks/texts", fields, token_from(settings.secret("secret_key")))
    return settings.public_base_url, fields, signed


def test_a_target_that_holds_something_is_refused(demo: Demo, postgresql_url: str) -> None:
    demo.run()
    there = Store(make_engine(postgresql_url))
    with there.write() as connection:
        connection.execute(text("CREATE TABLE theirs (n INTEGER)"))
    done = CliRunner().invoke(main, ["db", "move", postgresql_url])
    assert (done.exit_code, "not empty" in done.output) == (1, True)
    assert where_it_is(demo.house.store).state == "here"
    with there.write() as connection:
        connection.execute(text("DROP TABLE theirs"))
        # A move of another shop that was broken off is not ours to throw away.
        schema.upgrade_within(connection)
        installation.say(connection, "arriving", demo.house.now(), "ann", other="another one")
    with pytest.raises(MoveRefused, match="not empty"):
        _move(demo, postgresql_url)
    there.close()


def test_what_does_not_fit_is_told_before_anything_moves(demo: Demo, postgresql_url: str) -> None:
    with demo.house.store.write() as connection:
        connection.execute(text("UPDATE persons SET name = :name"), {"name": "a" * 201})
    with pytest.raises(MoveRefused, match=r"persons\.name are longer than 200"):
        _move(demo, postgresql_url)
    assert where_it_is(demo.house.store).state == "here"


def test_a_move_that_was_broken_off_silences_nobody_for_long(demo: Demo, monkeypatch: pytest.MonkeyPatch) -> None:
    demo.run()
    store = demo.house.store
    with store.write() as connection:
        installation.say(connection, "moving", demo.house.now(), "ann", other="there")
        assert machine.take_lease(connection, installation.MOVE_LEASE, "there", scheduler.LEASE_LASTS) == 1
        assert not installation.sends(connection)
        later = machine.database_clock(connection) + 2 * scheduler.LEASE_LASTS
    assert "is being moved" in where_it_is(store).says
    monkeypatch.setattr(machine, "database_now", lambda _connection: later)
    with store.read() as connection:
        assert installation.sends(connection)
    assert where_it_is(store).state == "here"
