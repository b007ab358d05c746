"""What a stepped clock goes to next is asked in one statement, on SQLite and PostgreSQL alike."""

from __future__ import annotations

from datetime import timedelta

from followup.storage import alerts, outbox, queue
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
