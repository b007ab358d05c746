"""Which cars a season of set changes has not drawn yet, and which of them may be invited now."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime

from sqlalchemy import Connection

from followup.core.planning.picture import Because, CarPicture
from followup.core.planning.set_change import changes_to, why_not_now
from followup.core.shop import Shop
from followup.storage import pictures, set_seasons
from followup.storage.rows import Row


@dataclass(frozen=True)
class Waiting:
    """`cars` are the ids of all cars of customers by their code; `may` those that may be invited now; `why_not` the
    others, by car, with what stands against each of its phones first; `alone` how many cars have no phone at all."""

    cars: dict[str, int]
    may: tuple[CarPicture, ...]
    why_not: dict[int, Because]
    alone: int


def waiting_cars(
    connection: Connection, shop: Shop, season: Row, now: datetime, *, needs_registration: bool
) -> Waiting:
    """Of the cars that have a set for that season and do not wear it."""
    known = set_seasons.sets_known(connection, shop.id)
    due = set_seasons.as_value(season, shop.zone)
    was_drawn = {row["vehicle_id"] for row in set_seasons.drawn(connection, season["id"])}
    wanted = {one for one, sets in known.items() if changes_to(sets, due.to_set, shop.state)} - was_drawn
    gathered = pictures.gather(connection, shop.id, now, near=shop)
    cars = {one["code"]: one["id"] for found in gathered.vehicles.values() for one in found}
    may: list[CarPicture] = []
    why_not: dict[int, Because] = {}
    for phone in gathered.phones:
        found = pictures.pictures_of_phone(gathered, shop, phone, now, needs_registration=needs_registration)
        for picture in (one for one in found if cars[one.vehicle] in wanted):
            because = why_not_now(replace(picture, set_change=due), due, now)
            if because is None:
                may.append(picture)
            else:
                why_not.setdefault(cars[picture.vehicle], because)
    reached = {cars[one.vehicle] for one in may}
    stopped = {one: because for one, because in why_not.items() if one not in reached}
    return Waiting(cars, tuple(may), stopped, len(wanted - reached - set(stopped)))
