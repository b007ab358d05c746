"""One day's sweep in a process of its own, so that its memory and its longest transaction are its alone.

`python -m followup.rehearsal.bench.sweep_day DATABASE_URL INSTANT [ANEW]`: a line for each shop, then the figures as
JSON. With ANEW so many cars are forecast anew besides, as after a change of the priors.
"""

from __future__ import annotations

import json
import resource
import sys
import time
from datetime import datetime
from typing import Any

from sqlalchemy import event, select

from followup.storage import shops, tables
from followup.storage.store import Store, make_engine
from followup.workflows.forecast_windows import forecast_windows, take_news
from followup.workflows.plan_texts import plan_texts


class LongestWrite:
    """The longest time, in seconds, for which a writer of this engine held its lock; the most that one took of a
    processor, which other work on the machine does not change; and how many transactions there were."""

    def __init__(self, engine: Any) -> None:
        self.seconds, self.worked, self.count = 0.0, 0.0, 0
        self._began: dict[int, tuple[float, float]] = {}
        event.listen(engine, "begin", self._begin)
        event.listen(engine, "commit", self._end)

    def _begin(self, connection: Any) -> None:
        if not connection.get_execution_options().get("followup_reader", False):
            self._began[id(connection)] = time.perf_counter(), time.thread_time()

    def _end(self, connection: Any) -> None:
        # Told just before the database itself commits.
        began = self._began.pop(id(connection), None)
        if began is not None:
            self.seconds = max(self.seconds, time.perf_counter() - began[0])
            self.worked = max(self.worked, time.thread_time() - began[1])
            self.count += 1


def sweep(url: str, now: datetime, anew: int) -> dict[str, float]:
    """What the ticks `forecast` and `plan` do for every shop, and how long each took: seconds, of a processor too."""
    store = Store(make_engine(url))
    _warm_up(store, now)
    longest = LongestWrite(store.engine)
    found = {"look": 0.0, "forecast": 0.0, "forecast_worked": 0.0, "plan": 0.0, "cars": 0.0, "texts": 0.0}
    began, worked = time.perf_counter(), time.process_time()
    with store.read() as connection:
        codes = shops.shop_codes(connection)
    for shop_id, code in codes:
        at = time.perf_counter()
        news = take_news(store, shop_id)
        looked, at_work = time.perf_counter(), time.process_time()
        found["cars"] += forecast_windows(store, shop_id, now, news) if news else 0
        between = time.perf_counter()
        found["forecast_worked"] += time.process_time() - at_work
        found["texts"] += plan_texts(store, shop_id, now)
        found["look"] += looked - at
        found["forecast"] += between - looked
        found["plan"] += time.perf_counter() - between
        print(code, flush=True)
    found |= {"seconds": time.perf_counter() - began, "worked": time.process_time() - worked}
    if anew:
        with store.read() as connection:
            query = select(tables.forecast_vehicles.c.vehicle_id).where(tables.forecast_vehicles.c.shop_id == 1)
            cars = list(connection.execute(query.limit(anew)).scalars())
        began, worked = time.perf_counter(), time.process_time()
        forecast_windows(store, 1, now, cars)
        found |= {"anew": len(cars), "anew_seconds": time.perf_counter() - began}
        found["anew_worked"] = time.process_time() - worked
    store.close()
    found |= {"longest": longest.seconds, "longest_worked": longest.worked, "writes": longest.count}
    return found | {"mib": resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024}


def _warm_up(store: Store, now: datetime) -> None:
    """What the first car of a process costs is no part of what each costs: a car that is forecast, a shop's plan."""
    with store.read() as connection:
        query = select(tables.forecast_vehicles.c.vehicle_id).where(tables.forecast_vehicles.c.shop_id == 1)
        first = list(connection.execute(query.limit(1)).scalars())
    forecast_windows(store, 1, now, first)
    # Of these alone somebody is surely looked at.
    plan_texts(store, 1, now, first)
    plan_texts(store, 1, now)


if __name__ == "__main__":
    address, instant, *more = sys.argv[1:]
    print(json.dumps(sweep(address, datetime.fromisoformat(instant), int(more[0]) if more else 0)), flush=True)
