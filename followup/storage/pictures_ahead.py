"""What of the days to come decides when planning looks at a phone again, read beside its pictures."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date, datetime, timedelta

from sqlalchemy import Connection

from followup.core.planning.next_look import Ahead, next_look
from followup.core.planning.picture import CarPicture
from followup.core.planning.send_rule import lowest_chance
from followup.core.shop import Shop
from followup.core.wall import day_of
from followup.storage import numbers, pictures, windows
from followup.storage.due import curves_of, iso_day
from followup.storage.rows import Row


def read_later(connection: Connection, shop: Shop, now: datetime, gathered: pictures.Gathered) -> dict[int, date]:
    """By car the first day on which planning reads more of its windows than it does now."""
    cars = {one["id"] for found in gathered.vehicles.values() for one in found}
    within, chance = pictures.near_within(shop), lowest_chance(shop.rules)
    return windows.read_later(connection, day_of(now, shop.zone), within, chance, cars)


def next_look_of(
    gathered: pictures.Gathered,
    shop: Shop,
    phone: Row,
    looked_at: Sequence[CarPicture],
    later: dict[int, date],
    now: datetime,
) -> datetime | None:
    """When a phone is looked at again of which nothing is planned now; None: not before something is changed."""
    today = day_of(now, shop.zone)
    ahead = {}
    for person in gathered.persons.get(phone["id"], []):
        for car in gathered.vehicles.get(person["id"], []):
            due = gathered.windows.get(car["id"], [])
            steps = tuple(_odometer_days(due))
            ahead[car["code"]] = Ahead(dict(curves_of(due, today)), later.get(car["id"]), steps)
    ends = [*_invites_end(gathered.invites.get(phone["id"], []), now)]
    found = next_look(looked_at, ahead, now)
    return min([*ends, *([found] if found else [])], default=None)


def _odometer_days(rows_of_car: Sequence[Row]) -> Iterator[date]:
    """Days from which on a reading of the odometer would tell more."""
    for row in rows_of_car:
        read_on = iso_day(row["body"].get("odometer_on"))
        if read_on:
            yield from (read_on + timedelta(days=days) for days, _ in row["body"].get("odometer_gains", ()))


def _invites_end(invites: Sequence[Row], now: datetime) -> Iterator[datetime]:
    """When an invite no longer counts: it was never sent, or is too long ago."""
    for one in invites:
        yield max((one["sent_at"] or one["due_at"]) + numbers.INVITES_SINCE, now)
        if one["state"] == "planned" and one["valid_until"]:
            yield max(one["valid_until"], now)
