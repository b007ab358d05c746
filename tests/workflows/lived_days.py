"""Days of a shop as they are lived by two databases alike: things happen, texts are planned and leave.

`python -m tests.workflows.lived_days CARS DAYS SEED` compares day by day what planning comes to where it looks at whom
something changed of, and where it looks at all; it ends with the first difference.
"""

from __future__ import annotations

import json
import random
import shutil
import sys
import tempfile
from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import date, datetime, timedelta
from pathlib import Path
from typing import Any
from unittest import mock

from sqlalchemy import Connection, func, select, update

from followup.core.shop import Shop
from followup.rehearsal.years.fleet import LivingFleet
from followup.rehearsal.years.opening import begins_at
from followup.storage import candidates, looks, rows, shops, tables
from followup.storage.store import Store, make_engine
from followup.workflows.forecast_windows import forecast_windows
from followup.workflows.keep_inspections import keep_inspections
from followup.workflows.plan_texts import plan_texts
from tests.shop_of_tests import add_shop
from tests.workflows.counter import SECRET

SENT = update(tables.texts).where(tables.texts.c.state == "planned")
PLANNED = tables.texts.c.state == "planned"
Planned = tuple[Any, ...]


def live_day(store: Store, shop_id: int, now: datetime, draws: random.Random, events: int) -> list[Planned]:
    """Some things happen, then a round is planned and its texts leave; what was planned, and the calls to make."""
    with store.write() as connection:
        for _ in range(events):
            happen(connection, shop_id, now, draws)
    plan_texts(store, shop_id, now)
    with store.write() as connection:
        found = list(_planned(connection, shop_id))
        connection.execute(SENT.where(tables.texts.c.kind == "invite").values(state="sent", sent_at=now))
    return found


def _planned(connection: Connection, shop_id: int) -> Iterator[Planned]:
    texts, reasons, alerts = tables.texts, tables.reasons, tables.alerts
    both = texts.join(reasons, reasons.c.id == texts.c.reason_id)
    query = select(texts.c.number, texts.c.reason, reasons.c.raised_by, texts.c.try_no, texts.c.due_at, texts.c.facts)
    for row in connection.execute(
        query.select_from(both).where(texts.c.shop_id == shop_id, PLANNED).order_by(texts.c.id)
    ):
        yield tuple(row)
    calls = select(alerts.c.raised_by).where(alerts.c.shop_id == shop_id, alerts.c.kind == "phone_task")
    yield tuple(sorted(connection.execute(calls).scalars()))


def happen(connection: Connection, shop_id: int, now: datetime, draws: random.Random) -> None:
    """One of the things that happen to a customer: drawn, and the same for the same draws."""
    what = draws.choice(_HAPPENINGS)
    what(connection, shop_id, now, draws)


def _any(connection: Connection, table: Any, shop_id: int, draws: random.Random) -> dict[str, Any]:
    ids = list(connection.execute(select(table.c.id).where(table.c.shop_id == shop_id).order_by(table.c.id)).scalars())
    found = rows.first(connection, select(table).where(table.c.id == draws.choice(ids)))
    assert found is not None
    return found


def _window(connection: Connection, shop_id: int, draws: random.Random) -> dict[str, Any]:
    car = _any(connection, tables.vehicles, shop_id, draws)
    table = tables.due_windows
    query = select(table).where(table.c.vehicle_id == car["id"], table.c.is_current.is_(True)).order_by(table.c.near_on)
    found = rows.every(connection, query)
    return found[0] if found else {"vehicle_id": car["id"], "item": "battery", "position": ""}


def _visit(connection: Connection, shop_id: int, now: datetime, draws: random.Random) -> None:
    """A visit, begun today; some are closed at once, others by the next thing that happens to visits."""
    car = _any(connection, tables.vehicles, shop_id, draws)
    closed = now if draws.random() < 0.6 else None
    code = f"lived {now:%Y%m%d} {draws.random()}"
    rows.add(
        connection, tables.visits, shop_id=shop_id, code=code, vehicle_id=car["id"], opened_at=now - timedelta(hours=2),
        closed_at=closed,
    )  # fmt: skip
    table = tables.visits
    still = update(table).where(table.c.shop_id == shop_id, table.c.closed_at.is_(None))
    connection.execute(still.where(table.c.opened_at < now - timedelta(days=1)).values(closed_at=now))


def _work(connection: Connection, shop_id: int, now: datetime, draws: random.Random) -> None:
    one = _window(connection, shop_id, draws)
    rows.add(
        connection, tables.work_done, shop_id=shop_id, vehicle_id=one["vehicle_id"], item=one["item"],
        position=one["position"], did=draws.choice(("replaced", "topped_off")), on=now.date(), kept_at=now,
    )  # fmt: skip


def _rest(connection: Connection, shop_id: int, now: datetime, draws: random.Random) -> None:
    one, because = _window(connection, shop_id, draws), draws.choice(("no", "later", "done"))
    until = now.date() + timedelta(days=draws.randrange(5, 60)) if draws.random() < 0.7 else None
    rows.add(
        connection, tables.rests, shop_id=shop_id, vehicle_id=one["vehicle_id"], item=one["item"],
        position=one["position"], because=because, from_on=now.date(), until=until,
    )  # fmt: skip


def _advice(connection: Connection, shop_id: int, now: datetime, draws: random.Random) -> None:
    one, decision = _window(connection, shop_id, draws), draws.choice(("declined", "later", "approved", "no_answer"))
    until = now.date() + timedelta(days=draws.randrange(5, 60)) if decision == "later" else None
    rows.add(
        connection, tables.recommendations, shop_id=shop_id, vehicle_id=one["vehicle_id"], item=one["item"],
        position=one["position"], decision=decision, because=draws.choice((None, "price")), until=until, on=now.date(),
    )  # fmt: skip


def _booking(connection: Connection, shop_id: int, now: datetime, draws: random.Random) -> None:
    """A booking is asked for or confirmed; the one before it was kept or missed."""
    table, tie = tables.booking_requests, _any(connection, tables.ties, shop_id, draws)
    newest = select(func.max(table.c.id)).where(table.c.shop_id == shop_id, table.c.state.in_(("asked", "confirmed")))
    before = connection.execute(newest).scalar_one()
    if before is not None:
        ended = draws.choice(("missed", "kept"))
        connection.execute(update(table).where(table.c.id == before).values(state=ended, slot_at=now))
    slot = now + timedelta(days=draws.randrange(1, 10)) if draws.random() < 0.7 else None
    rows.add(
        connection, table, shop_id=shop_id, person_id=tie["person_id"], vehicle_id=tie["vehicle_id"],
        state="confirmed" if slot else "asked", came_from="counter", verbatim="", wanted=[], avoid=[], needs=[],
        items=[], hours={}, slot_at=slot, offered=[], asked_at=now, changed_at=now,
    )  # fmt: skip


def _person(connection: Connection, shop_id: int, now: datetime, draws: random.Random) -> None:
    until: date = now.date() + timedelta(days=draws.randrange(3, 40))
    one = _any(connection, tables.persons, shop_id, draws)
    changed: dict[str, Any] = {"paused_until": until} if draws.random() < 0.8 else {"is_fleet": True}
    rows.change(connection, tables.persons, one["id"], **changed)


def _phone(connection: Connection, shop_id: int, now: datetime, draws: random.Random) -> None:
    one = _any(connection, tables.phones, shop_id, draws)
    line = draws.choice(("landline", "mobile", "mobile"))
    rows.change(connection, tables.phones, one["id"], line=line)


def _recall(connection: Connection, shop_id: int, now: datetime, draws: random.Random) -> None:
    one = _any(connection, tables.vehicles, shop_id, draws)
    rows.add(
        connection, tables.recalls, shop_id=shop_id, vehicle_id=one["id"], code=f"R{now:%Y%m%d}{draws.random()}",
        entered_on=now.date(), done_by="this shop", entered_by="sam",
    )  # fmt: skip


def _complaint(connection: Connection, shop_id: int, now: datetime, draws: random.Random) -> None:
    """A complaint; those before it are closed."""
    table, one = tables.alerts, _any(connection, tables.phones, shop_id, draws)
    is_mine = (table.c.shop_id == shop_id, table.c.kind == "complaint", table.c.closed_at.is_(None))
    connection.execute(update(table).where(*is_mine).values(closed_at=now))
    rows.add(
        connection, table, shop_id=shop_id, kind="complaint", phone_id=one["id"], says="a complaint",
        raised_by=f"lived {now:%Y%m%d} {draws.random()}", raised_at=now,
    )  # fmt: skip


def _stop(connection: Connection, shop_id: int, now: datetime, draws: random.Random) -> None:
    one = _any(connection, tables.consents, shop_id, draws)
    told = {key: value for key, value in one.items() if key != "id"}
    told |= {"event": draws.choice(("taken_back", "given_again")), "at": now}
    rows.add(connection, tables.consents, **told)


def _dropped(connection: Connection, shop_id: int, now: datetime, draws: random.Random) -> None:
    """A text that left turns out not to have."""
    table = tables.texts
    newest = select(func.max(table.c.id)).where(table.c.shop_id == shop_id, table.c.state == "sent")
    if (found := connection.execute(newest).scalar_one()) is not None:
        rows.change(connection, table, found, state="failed")


def _rules(connection: Connection, shop_id: int, now: datetime, draws: random.Random) -> None:
    """A manager tries another lead time; hardly ever."""
    if draws.random() < 0.1:
        rules = shops.load_shop(connection, shop_id).rules
        changed = type(rules)(**{**vars(rules), "lead_days": draws.choice((7, 14, 30))})
        shops.save_rules(connection, shop_id, changed, "sam", now, "a trial")


_HAPPENINGS = (
    _visit, _visit, _visit, _work, _work, _rest, _rest, _advice, _advice, _booking, _booking, _person, _phone, _recall,
    _complaint, _stop, _dropped, _rules,
)  # fmt: skip


@dataclass
class Compared:
    """What two databases alike came to, and how many phones each round looked at."""

    differences: list[str] = field(default_factory=list)
    texts: int = 0
    looked_at: list[int] = field(default_factory=list)
    looked_at_by_all: list[int] = field(default_factory=list)


def compare(folder: Path, *, cars: int, days: int, every: int, events: int, seed: int) -> Compared:
    """Live the same days with a look at whom something changed of and with one at all; up to the first difference."""
    now, told = _shop_in(folder, cars, seed), Compared()
    stores = [Store(make_engine(_url(folder, name))) for name in ("one", "other")]
    draws = [random.Random(seed) for _ in stores]
    for _ in range(0, days, every):
        with _counting(looks.to_look_at, told.looked_at):
            one = live_day(stores[0], 1, now, draws[0], events)
        with _counting(_everybody, told.looked_at_by_all), mock.patch.object(looks, "keep", lambda *_given: None):
            other = live_day(stores[1], 1, now, draws[1], events)
        told.texts += len(one) - 1
        if one != other:
            left_out = [told for told in other if told not in one]
            told.differences.append(f"{now}: {left_out or [told for told in one if told not in other]}")
            break
        now += timedelta(days=every)
    for store in stores:
        store.close()
    return told


def _counting(looks_at: Any, into: list[int]) -> Any:
    def counted(*given: Any) -> looks.ToLookAt:
        found: looks.ToLookAt = looks_at(*given)
        into.append(len(found.numbers))
        return found

    return mock.patch.object(looks, "to_look_at", counted)


def _everybody(connection: Connection, shop: Shop, now: datetime, _word: str) -> looks.ToLookAt:
    return looks.ToLookAt(candidates.numbers_to_look_at(connection, shop, now), [])


def _url(folder: Path, name: str) -> str:
    return f"sqlite+pysqlite:///{folder / name}.db"


def _shop_in(folder: Path, cars: int, seed: int) -> datetime:
    """A shop with a year on file, forecast, in two files alike; the instant at which its days begin."""
    fleet = LivingFleet.drawn(cars, 4, seed)
    lines = sorted(fleet.live_before(), key=lambda line: str(line["inspected_at"]))
    now, store = begins_at(fleet) + timedelta(hours=5), Store(make_engine(_url(folder, "one")))
    tables.metadata.create_all(store.engine)
    shop_id = add_shop(store)
    told = (json.dumps(line) for line in lines)
    for kept in keep_inspections(store, shop_id, told, now, "a test", SECRET, accepts_doubtful=True):
        assert kept.outcome == "new"
    forecast_windows(store, shop_id, now)
    store.close()
    shutil.copy(folder / "one.db", folder / "other.db")
    return now


if __name__ == "__main__":
    many, long, drawn = (int(one) for one in sys.argv[1:])
    with tempfile.TemporaryDirectory() as name:
        found = compare(Path(name), cars=many, days=long, every=1, events=max(many // 60, 1), seed=drawn)
    print(f"{found.texts} texts; looked at {sum(found.looked_at)} phones, by all {sum(found.looked_at_by_all)}")
    sys.exit(found.differences[0] if found.differences else 0)
