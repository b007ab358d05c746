"""What a stepped clock goes to next is asked in one statement, on SQLite and PostgreSQL alike."""

from __future__ import annotations

from datetime import timedelta
from pathlib import Path

import pytest
from sqlalchemy import event

from followup.storage import alerts, machine, outbox, outcomes, queue, tables
from followup.storage.store import Store, make_engine
from tests.shop_of_tests import BEGIN, add_shop

HOUR = timedelta(hours=1)


def test_the_next_text_and_the_next_telling_in_the_order_of_their_kinds(database_url: str) -> None:
    store = Store(make_engine(database_url))
    shop_id, other = add_shop(store), add_shop(store, "oak", "+13125550102")

    def asked(of: int, hours: float) -> tuple[bool, list[float]]:
        now = BEGIN + hours * HOUR
        with store.read() as connection:
            found = queue.next_instants(connection, now)
            return queue.is_anything_waiting(connection, of, now), [(one - BEGIN) / HOUR for one in found]

    assert asked(shop_id, 0) == (False, [])
    with store.write() as connection:
        outbox.plan_text(
            connection, shop_id, "help", "a word", BEGIN, phone_id=None, number="+13125550103", person_id=None,
            language="en", due_at=BEGIN + 2 * HOUR, valid_until=BEGIN + 9 * HOUR, facts={},
        )  # fmt: skip
        alerts.raise_alert(
            connection, shop_id=shop_id, kind="call_me", says="call", raised_by="a wish", raised_at=BEGIN,
            next_at=BEGIN + 3 * HOUR,
        )  # fmt: skip
    assert asked(shop_id, 1) == (False, [2, 3])
    assert asked(shop_id, 2) == (True, [3])
    assert asked(other, 2) == (False, [3])
    with store.read() as connection:
        assert [row["says"] for row in alerts.due_alerts(connection, shop_id, BEGIN + 3 * HOUR)] == ["call"]
        assert alerts.due_alerts(connection, shop_id, BEGIN + 2 * HOUR) == []
    store.close()


def test_what_is_due_next_is_found_without_looking_through_all_that_left(tmp_path: Path) -> None:
    """SQLite says how it finds it (EXPLAIN QUERY PLAN, sqlite.org/eqp.html): texts by an index, of which each shop has
    its part."""
    store = Store(make_engine(f"sqlite:///{tmp_path / 'shop.db'}"))
    shop_id = add_shop(store)
    asked: list[str] = []
    event.listen(store.engine, "before_cursor_execute", lambda _c, _d, words, *_: asked.append(words))
    found: list[str] = []
    with store.read() as connection:
        queue.next_instants(connection, BEGIN)
        outcomes.unknown_texts(connection, shop_id, BEGIN)
        for words in tuple(asked):
            steps = connection.exec_driver_sql(f"EXPLAIN QUERY PLAN {words}", (BEGIN.isoformat(),) * words.count("?"))
            found += [row[3] for row in steps if " texts" in row[3]]
    assert len(found) == 4 and all("SEARCH texts USING" in one and "ix_texts_queue" in one for one in found)
    store.close()


@pytest.mark.parametrize("state", ["claimed", "in_flight"])
def test_a_claim_is_over_at_the_instant_that_a_stepped_clock_goes_to(
    database_url: str, state: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Else nothing would be due after that instant, and the text would wait for whatever comes next."""
    store = Store(make_engine(database_url))
    shop_id = add_shop(store)
    over_at = BEGIN + HOUR
    monkeypatch.setattr(machine, "database_now", lambda connection: over_at)
    with store.write() as connection:
        text_id = outbox.plan_text(
            connection, shop_id, "help", "a word", BEGIN, phone_id=None, number="+13125550103", person_id=None,
            language="en", due_at=BEGIN, valid_until=BEGIN + 9 * HOUR, facts={},
        )  # fmt: skip
        gone = tables.texts.update().where(tables.texts.c.id == text_id)
        connection.execute(gone.values(state=state, claimed_by="gone", claimed_until=over_at))
        assert queue.next_instants(connection, BEGIN) == [over_at]
        assert queue.next_instants(connection, over_at) == []
        if state == "claimed":
            assert outbox.release_expired_claims(connection, shop_id) == 1
        else:
            assert outcomes.mark_lost_in_flight(connection, shop_id, over_at) == 1
    store.close()
