"""The bench of the sweep: its shops are alike, nothing is news in them but what is told, each bar is in its table."""

from __future__ import annotations

from pathlib import Path

import pytest
from sqlalchemy import func, select

from followup.rehearsal.bench import bare_sweep, sweep, sweep_fleet
from followup.rehearsal.bench.posting import Answers
from followup.rehearsal.bench.sweep import Asked, bench_sweep
from followup.rehearsal.bench.sweep_day import sweep as sweep_a_day
from followup.rehearsal.bench.sweep_fleet import build_group, tell_odometers
from followup.storage import schema, tables
from followup.storage.store import Store, make_engine


def test_shops_are_alike_and_only_what_is_told_is_news(database_url: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sweep_fleet, "CARS_A_SHOP", 8)
    store = Store(make_engine(database_url))
    schema.upgrade(store.engine)
    shops_told: list[int] = []
    group = build_group(store, 24, 7001, shops_told.append)
    assert (group.shops, group.cars, sum(shops_told)) == (3, 24, 3)
    with store.read() as connection:
        for table in (tables.due_windows, tables.texts, tables.inspections, tables.consents, tables.ties):
            query = select(func.count()).select_from(table).group_by(table.c.shop_id)
            counts = list(connection.execute(query).scalars())
            assert len(counts) == 3 and len(set(counts)) == 1
        # Each copy's windows are those of its own cars.
        made, cars = tables.due_windows, tables.vehicles
        foreign = select(func.count()).select_from(made.join(cars, made.c.vehicle_id == cars.c.id))
        assert connection.execute(foreign.where(made.c.shop_id != cars.c.shop_id)).scalar_one() == 0
    quiet = sweep_a_day(database_url, group.now, 0)
    assert quiet["forecast"] < quiet["look"] and quiet["cars"] == 0 and quiet["writes"] == quiet["texts"] == 0
    told = tell_odometers(store, group, 4)
    found = sweep_a_day(database_url, group.now, 3)
    assert (found["cars"], found["anew"], told) == (6, 3, 6) and 0 < found["longest"] < 60 and found["writes"] > 0
    assert found["forecast_worked"] > 0
    store.close()


def test_the_table_tells_each_bar(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sweep_fleet, "CARS_A_SHOP", 10)
    monkeypatch.setattr(sweep, "_BARE_ROWS", 500)
    monkeypatch.setattr(sweep._Bench, "hook_beside", lambda _bench, _seconds: Answers((300.0,), 1.0, 0))
    monkeypatch.setattr(sweep._Bench, "day", lambda bench, anew=0: sweep_a_day(bench.url, bench.group.now, anew))
    monkeypatch.setattr(sweep, "_ANEW", 2)
    figures = {one.check: one for one in bench_sweep(Asked(20, 1.0), lambda _: None)}
    asked = {check: one.asked for check, one in figures.items() if one.asked}
    assert asked["SQLite, the day's sweep, a million cars at that pace"] == "<= 60 s"
    assert asked["SQLite, news of one in 100, a million cars at that pace"] == "<= 2 s"
    # Of twenty cars none is the hundredth: what was not measured does not hold.
    assert figures["SQLite, news of one in 100, a million cars at that pace"].holds is False
    assert figures["SQLite, hook beside it, p99"].holds is False
    assert figures["SQLite, hook beside it, not accepted"].holds is True


def test_the_bare_sweep_reckons_every_row(tmp_path: Path) -> None:
    """10, 50 and 90 % of a log-normal variable: exp(mu), and 1.2816 spreads to either side of it (normal tables)."""
    assert bare_sweep.rows_a_second(f"sqlite+pysqlite:///{tmp_path / 'x.db'}", tmp_path, 12_000, lambda _: None) > 0
    engine = make_engine(f"sqlite+pysqlite:///{tmp_path / 'bare.db'}")
    with engine.connect() as connection:
        rows = connection.exec_driver_sql("SELECT mu, sd, early, likely, late FROM bench_bare_windows").all()
    assert len(rows) == 12_000
    for mu, sd, early, likely, late in rows[::999]:
        expected = [2.718281828459045 ** (mu + step * sd) for step in (-1.2816, 0.0, 1.2816)]
        assert [early, likely, late] == pytest.approx(expected, rel=1e-4)
    engine.dispose()
