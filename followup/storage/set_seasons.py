"""Seasons in which the shop changes sets of tires: which one is open, who was drawn, and what is known of each car."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable
from datetime import date, datetime
from typing import Any

from sqlalchemy import Connection, String, cast, desc, insert, select, update

from followup.core.planning.picture import SetChange
from followup.core.planning.set_change import ITEM, SetsKnown
from followup.core.wall import day_of
from followup.storage import rows, tables
from followup.storage.rows import Row

_SEASONS = tables.set_seasons.c
_OPEN = select(tables.set_seasons).where(_SEASONS.shop_id == rows.given("shop_id"), _SEASONS.ended_at.is_(None))


def begin(connection: Connection, shop_id: int, **season: Any) -> int | None:
    """Keep a new season; None where one is open already."""
    return rows.add_new(connection, tables.set_seasons, shop_id=shop_id, **season)


def open_season(connection: Connection, shop_id: int) -> Row | None:
    """The season that has not ended."""
    return rows.first(connection, _OPEN, shop_id=shop_id)


def seasons(connection: Connection, shop_id: int) -> list[Row]:
    """Every season of the shop, newest first."""
    table = tables.set_seasons
    return rows.every(connection, select(table).where(table.c.shop_id == shop_id).order_by(desc(table.c.id)))


def change(connection: Connection, shop_id: int, season_id: int, **news: Any) -> bool:
    """Change an open season; False where it is none of this shop or has ended."""
    table = tables.set_seasons
    mine = (table.c.id == season_id, table.c.shop_id == shop_id, table.c.ended_at.is_(None))
    return connection.execute(update(table).where(*mine).values(**news)).rowcount == 1


def keep_drawn(
    connection: Connection, season: Row, week_on: date, found: Iterable[tuple[int, int]]
) -> int:  # fmt: skip
    """Keep the week's tranche, (phone, car) each; how many. 0 where the week was drawn before: by another process."""
    table = tables.set_seasons
    not_yet = table.c.drawn_on.is_(None) | (table.c.drawn_on < week_on)
    mine = (table.c.id == season["id"], table.c.ended_at.is_(None), table.c.paused_at.is_(None), not_yet)
    if connection.execute(update(table).where(*mine).values(drawn_on=week_on)).rowcount != 1:
        return 0
    values = [
        {"shop_id": season["shop_id"], "season_id": season["id"], "phone_id": phone_id, "vehicle_id": vehicle_id,
         "week_on": week_on}
        for phone_id, vehicle_id in found
    ]  # fmt: skip
    if values:
        connection.execute(insert(tables.set_invites), values)
    return len(values)


def drawn(connection: Connection, season_id: int) -> list[Row]:
    """Who was drawn in that season, oldest first."""
    table = tables.set_invites
    return rows.every(connection, select(table).where(table.c.season_id == season_id).order_by(table.c.id))


def drawn_cars(
    connection: Connection, shop_id: int, vehicle_ids: list[int] | None = None
) -> dict[tuple[int, int], SetChange]:
    """By (phone, car), the season of those that were drawn; {} while it is paused, and where none is open."""
    season = open_season(connection, shop_id)
    if season is None or season["paused_at"] is not None:
        return {}
    due = as_value(season, _zone(connection, shop_id))
    table = tables.set_invites
    query = select(table.c.phone_id, table.c.vehicle_id).where(table.c.season_id == season["id"])
    if vehicle_ids is not None:
        query = query.where(table.c.vehicle_id.in_(vehicle_ids))
    return {(row["phone_id"], row["vehicle_id"]): due for row in rows.every(connection, query)}


def as_value(season: Row, zone: str) -> SetChange:
    """A season's row as planning knows it; `zone` is the shop's."""
    return SetChange(season["id"], season["to_set"], day_of(season["begun_at"], zone), season["until_on"])


def _zone(connection: Connection, shop_id: int) -> str:
    found = rows.first(connection, select(tables.shops.c.zone).where(tables.shops.c.id == shop_id))
    assert found is not None
    return str(found["zone"])


def sets_known(connection: Connection, shop_id: int) -> dict[int, SetsKnown]:
    """What is known of each car of whose tires a label was told, or whose other set was noted."""
    table, work = tables.inspections, tables.work_done
    told = [table.c.body["tire_set"].as_string(), table.c.body[("vehicle", "tire_set")].as_string()]
    labels = select(table.c.vehicle_id, table.c.inspected_on, told[0].label("on_line"), told[1].label("on_car")).where(
        table.c.shop_id == shop_id, table.c.is_current.is_(True), told[0].is_not(None) | told[1].is_not(None)
    )
    noted = select(table.c.vehicle_id, table.c.body).where(
        table.c.shop_id == shop_id, table.c.is_current.is_(True), cast(table.c.body, String).contains(f'"{ITEM}"')
    )
    changed = select(work.c.vehicle_id, work.c.on).where(work.c.shop_id == shop_id, work.c.item == ITEM)
    seen: dict[int, list[tuple[date, str]]] = defaultdict(list)
    other: dict[int, str] = {}
    changes: dict[int, list[date]] = defaultdict(list)
    for row in rows.every(connection, labels.order_by(table.c.inspected_at, table.c.id)):
        seen[row["vehicle_id"]].append((row["inspected_on"], row["on_line"] or row["on_car"]))
    for row in rows.every(connection, noted.order_by(table.c.inspected_at, table.c.id)):
        for reading in row["body"].get("readings", ()):
            if reading.get("item") == ITEM and reading.get("found_as"):
                other[row["vehicle_id"]] = reading["found_as"]
    for row in rows.every(connection, changed):
        changes[row["vehicle_id"]].append(row["on"])
    cars = {*seen, *other}
    return {one: SetsKnown(tuple(seen[one]), other.get(one), tuple(changes[one])) for one in cars}


def texts_of_season(connection: Connection, shop_id: int, season_id: int) -> list[Row]:
    """The invites of a season that were planned and did not fail: phone, car, state, when they left."""
    texts, reasons = tables.texts, tables.reasons
    query = (
        select(texts.c.phone_id, texts.c.vehicle_id, texts.c.state, texts.c.sent_at, texts.c.due_at)
        .select_from(texts.join(reasons, texts.c.reason_id == reasons.c.id))
        .where(
            texts.c.shop_id == shop_id,
            texts.c.reason == "set_change",
            reasons.c.raised_by.startswith(f"season {season_id}, "),
            texts.c.state.not_in(("dropped", "failed")),
        )
    )
    return rows.every(connection, query)


def booked_since(connection: Connection, shop_id: int, since: datetime) -> dict[int, str]:
    """The state of the last booking of each car that asked since then."""
    table = tables.booking_requests
    query = select(table.c.vehicle_id, table.c.state).where(table.c.shop_id == shop_id, table.c.asked_at >= since)
    return {row["vehicle_id"]: row["state"] for row in rows.every(connection, query.order_by(table.c.id))}


def came_since(connection: Connection, shop_id: int, since: datetime) -> set[int]:
    """Cars with a visit that was opened since then."""
    table = tables.visits
    query = select(table.c.vehicle_id).where(table.c.shop_id == shop_id, table.c.opened_at >= since)
    return {row["vehicle_id"] for row in rows.every(connection, query)}
