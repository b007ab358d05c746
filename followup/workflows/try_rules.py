"""Try other rules on this shop's own cars before they are kept: the coming half year beside today's rules and beside a
plain six-month reminder. Reads only.

1. Everything that planning looks at is read in one view: each car with its windows, its texts, what is booked.
2. The shop's own rates of answers are counted over the last year.
3. `core/planning/what_if` lives 26 weeks in 200 drawn worlds under each set of rules; the caller takes the steps, so
   that a page can tell how far it is.

What it leaves out is said in `LEFT_OUT`, on the page too. If the process dies nothing is lost: nothing was changed.
"""

from __future__ import annotations

from collections.abc import Generator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta
from typing import Any

from followup.core.forecast.first_due import SHARED_BY_MILES
from followup.core.forecast.window import DueCurve
from followup.core.items import catalogue_of
from followup.core.planning.picture import CarPicture
from followup.core.planning.slots import labor_left
from followup.core.shop import FORECAST_RULES, Shop, ShopRules, closed_because
from followup.core.wall import day_of
from followup.storage import people, pictures, results, shops
from followup.storage.brought import brought_by_texts
from followup.storage.rows import Row
from followup.storage.store import Connection, Store

LEFT_OUT = (
    "Recalls, free top-offs, missed visits and the question for the odometer are not in it, nor are new customers.",
    "Invites are not held back for free hours here: where more are expected than planned, they would leave later.",
    "A visit measures everything again: what is not done then keeps a window as wide in proportion.",
)
NO_FORECAST = "Changed limits forecast every car anew once they are kept; here the windows stand as they are."
WEEKS = 26
COUNTED_FOR = timedelta(days=365)
BOOKED_WITHIN = timedelta(days=14)
PROMPTED_WITHIN = timedelta(days=42)
# Of these one unit is what forecasts call near: 1/32 of tread, 1 mm of lining.
_NEAR_BY_UNIT = ("tire_tread", "brake_pad")


@dataclass(frozen=True)
class CarChange:
    """A car whose first text would leave on another day; None: none in this half year."""

    vehicle_id: int
    label: str
    before: date | None
    after: date | None


@dataclass(frozen=True)
class Tried:
    """What came of it: outcomes under today's rules, the tried ones and the reminder (`what_if.outcome.Outcome`);
    planned labor hours by skill and week, today's and the tried; rates as they were counted; cars told otherwise."""

    today: Any
    tried: Any
    reminder: Any
    planned_today: Mapping[str, Sequence[float]]
    planned_tried: Mapping[str, Sequence[float]]
    odds: Any
    cars: int
    changes: tuple[CarChange, ...]
    notes: tuple[str, ...]


def try_rules(
    store: Store, shop_id: int, news: Mapping[str, Any], now: datetime, seed: int = 1, worlds: int = 200
) -> Generator[float, None, Tried]:
    """Yields the share that is done; returns what came of it. `news` are the tried rules by name."""
    # Imported here: numpy and scipy take longer than a page may.
    import numpy as np

    from followup.core.planning.what_if.odds import odds_of
    from followup.core.planning.what_if.outcome import outcomes
    from followup.core.planning.what_if.plan import plan_for

    yield 0.0
    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
        cars, names = _cars(connection, shop, now)
        brought = brought_by_texts(connection, shop_id, now)
        counted = odds_of(_counted(connection, shop, now, len(names)))
        # Pacing and what if go by the same.
        odds = replace(counted, booked=(brought.booked[0], brought.booked[1]), landing=brought.landing)
    rules, today = replace(shop.rules, **news), day_of(now, shop.zone)
    plans = [plan_for(shop, shop.rules, cars, today), plan_for(shop, rules, cars, today)]
    plans.append(plan_for(shop, shop.rules, cars, today, "reminder"))
    random = np.random.default_rng(seed)
    found = yield from outcomes(plans, cars, odds, tuple(shop.rules.labor_hours), random, worlds)
    notes = (*LEFT_OUT, *([NO_FORECAST] if any(name in FORECAST_RULES for name in _changed(shop.rules, rules)) else []))
    lived: dict[str, Any] = dict(zip(("today", "tried", "reminder"), found, strict=True))
    changes = tuple(_changes(found[0].first_text, found[1].first_text, names, today))
    planned = {"planned_today": _planned(shop, today), "planned_tried": _planned(replace(shop, rules=rules), today)}
    return Tried(**lived, **planned, odds=odds, cars=len(cars), changes=changes, notes=notes)


def _changed(before: ShopRules, after: ShopRules) -> list[str]:
    return [name for name in vars(before) if getattr(before, name) != getattr(after, name)]


def _cars(connection: Connection, shop: Shop, now: datetime) -> tuple[list[Any], dict[str, tuple[int, str]]]:
    """Every car with a phone, as `what_if` looks at it; ids and labels by their keys."""
    from followup.core.planning.what_if.cars import car_ahead

    gathered = pictures.gather(connection, shop.id, now)
    ids = {row["code"]: row for found in gathered.vehicles.values() for row in found}
    cars, names = [], {}
    for phone in gathered.phones:
        for picture in pictures.pictures_of_phone(gathered, shop, phone, now, needs_registration=False):
            vehicle = ids[picture.vehicle]
            if picture.vehicle in names:
                continue
            names[picture.vehicle] = (vehicle["id"], _label(picture, vehicle))
            cars.append(car_ahead(picture, _items(picture, gathered.windows.get(vehicle["id"], []), shop, now), now))
    return cars, names


def _label(picture: CarPicture, vehicle: Row) -> str:
    label = people.vehicle_of(vehicle).label or picture.vehicle
    return f"{picture.person.name}, {label}" if picture.person.name else label


def _items(picture: CarPicture, windows: Sequence[Row], shop: Shop, now: datetime) -> list[Any]:
    from followup.core.planning.what_if.cars import (
        USUAL_NEAR_DAYS,
        ItemAhead,
        job_of,
        may_be_told,
        may_matter,
        near_days,
    )

    catalogue, today, found = catalogue_of(shop), day_of(now, shop.zone), []
    due = {one.at: one for one in picture.due}
    for row in windows:
        at, item = (row["item"], row["position"]), catalogue.get(row["item"])
        if item is None or at not in due or due[at].is_free_top_off:
            continue
        body, because = row["body"], row["body"]["because"]
        by_miles = because["distance_per_day"] is not None
        near = near_days(because["wear_per_1000"], because["distance_per_day"]) if item.code in _NEAR_BY_UNIT else None
        legal = body.get("legal")
        one = ItemAhead(
            at, DueCurve.from_json(body["curve"]), (today - row["as_of"]).days,
            DueCurve.from_json(legal["curve"]) if legal else None, *job_of(item), near or USUAL_NEAR_DAYS,
            SHARED_BY_MILES if by_miles else 0.0, may_be_told(picture, due[at], now),
            DueCurve.from_json(body["near"]) if body.get("near") else None,
        )  # fmt: skip
        if may_matter(one):
            found.append(one)
    return found


def _counted(connection: Connection, shop: Shop, now: datetime, cars: int) -> Any:
    """The shop's own answers, stops and visits of the last year."""
    from followup.core.planning.what_if.cars import REASON
    from followup.core.planning.what_if.odds import Counted

    since = now - COUNTED_FOR
    texts = results.invites_with_try(connection, shop.id, since, REASON)
    visits = results.visits_since(connection, shop.id, since)
    stops = len(results.stops_since(connection, shop.id, since))
    texts_of = _by_car(texts, "sent_at")
    prompted = [
        one for one in visits if _any_between(texts_of, one, one["opened_at"] - PROMPTED_WITHIN, one["opened_at"])
    ]
    first = min((one["opened_at"] for one in visits), default=now)
    years = cars * (now - first) / COUNTED_FOR
    own = (len(visits) - len(prompted), years)
    return Counted(stops=(min(stops, len(texts)), len(texts)), own=own)


def _by_car(found: Sequence[Row], at: str) -> dict[int, list[datetime]]:
    by_car: dict[int, list[datetime]] = {}
    for one in found:
        by_car.setdefault(one["vehicle_id"], []).append(one[at])
    return by_car


def _any_between(by_car: Mapping[int, Sequence[datetime]], of: Row, begins: datetime, ends: datetime) -> bool:
    return any(begins <= at <= ends for at in by_car.get(of["vehicle_id"], ()))


def _planned(shop: Shop, today: date) -> dict[str, list[float]]:
    """Labor hours that are planned in each of the weeks from today on, by skill."""
    planned = {skill: [0.0] * WEEKS for skill in shop.rules.labor_hours}
    for number in range(7 * WEEKS):
        day = today + timedelta(days=number)
        if closed_because(shop, day) is None:
            for skill, hours in labor_left(shop, day, ()).items():
                planned[skill][number // 7] += hours
    return planned


def _changes(
    before: Mapping[str, int | None], after: Mapping[str, int | None], names: Mapping[str, tuple[int, str]], today: date
) -> list[CarChange]:
    """Soonest first, by whichever of the two days comes first."""
    found = [
        CarChange(*names[key], _on(today, before[key]), _on(today, after[key]))
        for key in before
        if before[key] != after[key]
    ]
    return sorted(found, key=lambda one: (min(day for day in (one.before, one.after) if day), one.label))


def _on(today: date, day: int | None) -> date | None:
    return None if day is None else today + timedelta(days=day)
