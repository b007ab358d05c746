"""Forecast when each item of a car will be due, and keep the windows.

1. The cars that have news since their windows were made are found (or those that are named are taken).
2. Their histories are built from the current inspections, visits and odometer readings told by text.
3. `core/forecast` makes windows for the action limit, and for the legal limit beside it, by what the shop's cars
   taught, else by the published values.
4. The windows are kept, the earlier ones stay for scoring; beside the present ones stands what they rest on. A few
   cars are one transaction: if the process dies, the rest still has news and is found next time. What is brought
   meanwhile is news again: it is asked what is known, not when it came.
"""

from __future__ import annotations

import threading
from collections.abc import Iterable, Iterator
from dataclasses import replace
from datetime import date, datetime
from itertools import islice
from typing import TYPE_CHECKING, Any

from followup.core.forecast.history import CarHistory, Reading, touches
from followup.core.forecast.priors import ShopPriors
from followup.core.forecast.window import DueWindow
from followup.core.items import BY_CODE
from followup.core.items.readings import measured
from followup.core.shop import Shop
from followup.core.wall import day_of
from followup.storage import evidence, marks, shops, windows
from followup.storage.evidence import KeptEvidence
from followup.storage.histories import history_of
from followup.storage.shop_priors import priors_of
from followup.storage.store import Connection, Store

if TYPE_CHECKING:
    from collections.abc import Callable

_CARS_AT_ONCE = 50
# What a text may call "last changed" or "last done"; a tire that was moved is the same tire.
_CHANGES = ("replaced", "serviced", "topped_off")
_OVERTAKES = ("replaced", "rotated", "topped_off", "serviced")
# Who waits to write (a hook) is let in between: a transaction of these cars is short, and SQLite's lock is not fair.
_KEPT_AT_ONCE, _PAUSE_SECONDS = 2, 0.005
_MARKS_AT_ONCE = 500
# So many are planned for by themselves; of more, planning looks at all who were marked.
_NEWS_AT_ONCE = 100


Bodies = list[tuple[str, str, dict[str, Any]]]
Made = tuple[int, date, Bodies, list[KeptEvidence]]


def forecast_windows(
    store: Store,
    shop_id: int,
    now: datetime,
    vehicle_ids: Iterable[int] | None = None,
    progress: Callable[[int], object] | None = None,
) -> int:
    """Forecast the named cars, or all that have news; how many cars. `progress` is told of each finished handful."""
    if vehicle_ids is None:
        vehicle_ids = take_news(store, shop_id)
    with store.read() as connection:
        # Read before what it names: a change in between is news again.
        rules = windows.rules_of_forecast(connection, shop_id)
        shop = shops.load_shop(connection, shop_id)
        priors = priors_of(connection, shop)
    waiting, done, pause = iter(list(vehicle_ids)), 0, threading.Event()
    while batch := list(islice(waiting, _CARS_AT_ONCE)):
        with store.read() as connection:
            # Read before the histories, for the same reason.
            seen = marks.forecast_marks_of(connection, batch)
            known = windows.known_of_cars(connection, shop_id, rules, batch)
            histories = {one: history_of(connection, shop, one) for one in batch}
        made = list(_forecast(shop, priors, histories, day_of(now, shop.zone)))
        made += [(one, now.date(), [], []) for one, history in histories.items() if history is None]
        for begin in range(0, len(made), _KEPT_AT_ONCE):
            if begin:
                pause.wait(_PAUSE_SECONDS)
            with store.write() as connection:
                _keep(connection, shop_id, made[begin : begin + _KEPT_AT_ONCE], known, seen, now)
        done += len(batch)
        if progress:
            progress(len(batch))
    return done


def _keep(
    connection: Connection,
    shop_id: int,
    made: list[Made],
    known: dict[int, str],
    seen: dict[int, list[int]],
    now: datetime,
) -> None:
    """Keep what was made of some cars, but not of one of which something else is known by now: it stays marked, or was
    forecast already. `seen` are the marks that were there before it was read."""
    vehicle_ids = [vehicle_id for vehicle_id, *_ in made]
    windows.take_turn(connection, vehicle_ids)
    rules = windows.rules_of_forecast(connection, shop_id)
    by_now = windows.known_of_cars(connection, shop_id, rules, vehicle_ids)
    made = [one for one in made if by_now.get(one[0]) == known.get(one[0])]
    if made:
        windows.replace_windows_of_cars(
            connection, shop_id, [(car, as_of, bodies) for car, as_of, bodies, _ in made], now
        )
        evidence.replace_evidence(connection, shop_id, {car: kept for car, _, _, kept in made})
        noted = {car: known.get(car, "") for car, *_ in made}
        windows.note_forecasts(connection, shop_id, noted, rules, now)
        marks.take_out_forecast_marks(connection, [mark for car in noted for mark in seen.get(car, ())])


def forecast_news(
    store: Store,
    shop_id: int,
    asks_now: Callable[[], datetime],
    most: int | None,
    then: Callable[[list[int]], object],
) -> int:
    """Forecast all cars that have news, some after the other, or at most so many; how many. `then` is told of those
    that were forecast together."""
    done, before = 0, list[int]()
    while cars := take_news(store, shop_id, most or _NEWS_AT_ONCE):
        # What was overtaken by something newer is news still: the next tick has it.
        if cars == before:
            break
        done += forecast_windows(store, shop_id, asks_now(), cars)
        then(cars)
        if most is not None:
            break
        before = cars
    return done


def take_news(store: Store, shop_id: int, most: int | None = None) -> list[int]:
    """The cars to be forecast now, at most so many; marks of others, of which nothing else is known, are taken out."""
    with store.read() as connection:
        news = windows.look_for_news(connection, shop_id, most)
    for begin in range(0, len(news.idle_marks), _MARKS_AT_ONCE):
        with store.write() as connection:
            marks.take_out_forecast_marks(connection, news.idle_marks[begin : begin + _MARKS_AT_ONCE])
    return news.cars


def count_cars_with_news(store: Store, shop_id: int) -> int:
    """How many cars `forecast_windows` would forecast now."""
    with store.read() as connection:
        return len(windows.cars_with_news(connection, shop_id))


def _forecast(shop: Shop, priors: ShopPriors, histories: dict[int, CarHistory | None], today: date) -> Iterator[Made]:
    """Windows as of today, so that what was told since the last inspection counts."""
    # Imported here: numpy and scipy take longer than a page may.
    from followup.core.forecast.due import forecast_cars
    from followup.core.forecast.odometer_gain import variance_gained

    known = {vehicle_id: one for vehicle_id, one in histories.items() if one is not None}
    by_code = {one.vehicle.code: vehicle_id for vehicle_id, one in known.items()}
    cars = list(known.values())
    rules = shop.rules
    action = forecast_cars(
        cars,
        today,
        "action",
        rules.action_limits,
        priors=priors,
        with_ahead=True,
        with_stored_sets=True,
        with_evidence=True,
        with_near=True,
    )
    legal = {
        (one.vehicle, one.item, one.position): one
        for one in forecast_cars(cars, today, "legal", rules.legal_limits, priors=priors)
    }
    gained = variance_gained(cars, today, priors.usage)
    made: dict[int, tuple[Bodies, list[KeptEvidence]]] = {vehicle_id: ([], []) for vehicle_id in known}
    for window in action:
        vehicle_id = by_code[window.vehicle]
        bodies, kept = made[vehicle_id]
        kept.append(_evidence(window))
        window = replace(window, evidence=None)
        if window.stored_set is None:
            body = _body(window, legal.get((window.vehicle, window.item, window.position)), known[vehicle_id])
            if window.ahead is not None and window.vehicle in gained:
                body["odometer_gains"] = [list(one) for one in gained[window.vehicle]]
                body["odometer_on"] = max(on for on, _ in known[vehicle_id].odometers).isoformat()
            bodies.append((window.item, window.position, body))
    for vehicle_id, (bodies, kept) in made.items():
        yield vehicle_id, today, bodies, kept


def _evidence(window: DueWindow) -> KeptEvidence:
    """What pages show of a window's reasons. Tires that are stored are kept here alone: nobody is texted about them."""
    assert window.evidence is not None
    stored = None if window.stored_set is None else replace(window, evidence=None).to_json()
    return KeptEvidence(window.item, window.position, window.stored_set, window.evidence.to_json(), stored)


def _body(window: DueWindow, legal: DueWindow | None, history: CarHistory) -> dict[str, Any]:
    """What is kept of a window: itself, its legal limit, what was last measured and when, and the last work."""
    read = [one for one in history.readings if one.item == window.item and touches(one.position, window.position)]
    work = [one for one in history.work if one.item == window.item and touches(one.position, window.position)]
    checked = [one for one in read if one.entered.not_checked is None]
    last = max(checked, key=lambda one: one.on, default=None)
    # A part that was changed or moved since is not the one that was measured.
    if last and any(one.did in _OVERTAKES and one.on >= last.on for one in work):
        last = None
    days = [*(one.on for one in checked), *(one.on for one in work)]
    return {
        **window.to_json(),
        "legal": {"curve": legal.curve.to_json(), "is_past": legal.is_past} if legal and legal.limit else None,
        "measured": _measured(last) if last else None,
        "measured_on": last.on.isoformat() if last else None,
        "done_on": max(changed).isoformat() if (changed := [one.on for one in work if one.did in _CHANGES]) else None,
        "known_on": max(days).isoformat() if days else None,
    }


def _measured(reading: Reading) -> dict[str, Any]:
    """What a person read that day, in the unit that was entered: a text says this, never what is reckoned from it."""
    item, entered = reading.of or BY_CODE[reading.item], reading.entered
    if item.measure is not None and entered.value is not None:
        # A rotor's margin is ours; the number on the gauge is the thickness.
        return {"value": entered.value, "unit": entered.unit or item.unit}
    found = measured(item, entered)
    if found is not None:
        return {"value": found.value, "unit": found.unit}
    return {"word": entered.level or entered.looks or entered.verdict or entered.found_as or ""}
