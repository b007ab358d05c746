"""A shop that was read before is given back only where it is still the same, on SQLite and PostgreSQL alike."""

from __future__ import annotations

from dataclasses import replace

import pytest

from followup.core.shop import Shop
from followup.storage import shops
from followup.storage.store import Store, make_engine
from tests.shop_of_tests import BEGIN, add_shop


def _read(store: Store, shop_id: int) -> Shop:
    with store.read() as connection:
        return shops.load_shop(connection, shop_id)


def test_what_was_changed_is_read_anew_and_what_was_undone_never_was(database_url: str) -> None:
    store = Store(make_engine(database_url))
    shop_id = add_shop(store)
    first = _read(store, shop_id)
    assert _read(store, shop_id) is first
    later = replace(first.rules, lead_days=first.rules.lead_days + 7)
    with pytest.raises(RuntimeError, match="undone"), store.write() as connection:
        shops.save_rules(connection, shop_id, later, "kim", BEGIN, "to see")
        assert shops.load_shop(connection, shop_id).rules.lead_days == later.lead_days
        raise RuntimeError("undone")
    assert _read(store, shop_id).rules == first.rules
    with store.write() as connection:
        assert shops.load_shop(connection, shop_id) is first
    with store.write() as connection:
        shops.save_rules(connection, shop_id, later, "kim", BEGIN, "more time")
    assert _read(store, shop_id).rules.lead_days == later.lead_days
    with store.write() as connection:
        shops.change_shop(connection, shop_id, name="Oak Road Auto")
    assert _read(store, shop_id).name == "Oak Road Auto"
    store.close()


def test_another_database_has_another_shop(database_url: str) -> None:
    here = Store(make_engine(database_url))
    shop_id = add_shop(here)
    _read(here, shop_id)
    again = Store(make_engine(database_url))
    with again.write() as connection:
        shops.change_shop(connection, shop_id, name="Oak Road Auto")
    assert _read(here, shop_id).name == _read(again, shop_id).name == "Oak Road Auto"
    here.close()
    again.close()
