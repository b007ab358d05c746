"""Score forecasts: what was read next, held against what was forecast.

1. The cars are found of which something else is known than when they were scored last: a new inspection, a correction,
   work that was told later; or all, where the shop goes by other priors than then.
2. All windows that were ever kept of such a car are read. Of those that were made on the same knowledge of an item the
   ones of the first day count (of that day the last), and those that a planned text rests on: a car that is forecast
   anew each night is not counted each night. For days on which an item was read but no window was kept (readings that
   came in from a file), the forecast of today says what it would have said then, from what was known then.
3. `core/forecast/scored.py` scores each by the first reading after it.
4. The car's scores are replaced as a whole, in one transaction with the note of what was known: scoring twice, or by
   two processes, leaves the same, and if the process dies the car is found again. Windows are never thrown away, so
   nothing is too late to be scored.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import asdict, fields
from datetime import date, datetime
from itertools import islice, pairwise
from typing import TYPE_CHECKING, Any

from followup.core.forecast.history import CarHistory
from followup.core.forecast.priors import ShopPriors
from followup.core.forecast.window import DueWindow
from followup.core.shop import Shop
from followup.storage import scores, shops
from followup.storage.histories import history_of
from followup.storage.rows import Row
from followup.storage.shop_priors import priors_of
from followup.storage.store import Store

if TYPE_CHECKING:
    from followup.core.forecast.forecast_score import ForecastScore

_CARS_AT_ONCE = 20
_WINDOW_FIELDS = {one.name for one in fields(DueWindow)}
# A window and the id under which it is kept; None where it was forecast now as of then.
Made = tuple[DueWindow, int | None]


def score_forecasts(
    store: Store,
    shop_id: int,
    now: datetime,
    most_cars: int | None = None,
    progress: Callable[[int], object] | None = None,
) -> int:
    """Score the cars that have news, or so many of them; how many. `progress` is told of each finished handful."""
    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
        priors = priors_of(connection, shop)
        wanted = scores.cars_to_score(connection, shop_id)[:most_cars]
    waiting, done = iter(wanted), 0
    while batch := list(islice(waiting, _CARS_AT_ONCE)):
        with store.read() as connection:
            histories = {one: history_of(connection, shop, one) for one, _ in batch}
            kept = {one: scores.windows_ever(connection, one) for one, _ in batch}
        found = dict(_scored(shop, priors, {one: it for one, it in histories.items() if it is not None}, kept))
        with store.write() as connection:
            for vehicle_id, known in batch:
                scores.replace_scores(connection, shop_id, vehicle_id, known, found.get(vehicle_id, []), now)
        done += len(batch)
        if progress:
            progress(len(batch))
    return done


def count_cars_to_score(store: Store, shop_id: int) -> int:
    """How many cars `score_forecasts` would score now."""
    with store.read() as connection:
        return len(scores.cars_to_score(connection, shop_id))


def _scored(
    shop: Shop, priors: ShopPriors, histories: dict[int, CarHistory], kept: dict[int, list[Row]]
) -> Iterator[tuple[int, list[dict[str, Any]]]]:
    # Imported here: numpy and scipy take longer than a page may.
    from followup.core.forecast.scored import score_windows

    made = {one: _kept_windows(rows) for one, rows in kept.items()}
    for vehicle_id, window in _looked_back(shop, histories, made, priors):
        made[vehicle_id].append((window, None))
    for vehicle_id, history in histories.items():
        of_car = made[vehicle_id]
        found = score_windows([window for window, _ in of_car], history, shop.rules.action_limits, priors)
        yield (
            vehicle_id,
            [_row(score, window_id) for score, (_, window_id) in zip(found, of_car, strict=True) if score is not None],
        )


def _row(score: ForecastScore, window_id: int | None) -> dict[str, Any]:
    return asdict(score) | {"window_id": window_id}


def _kept_windows(rows: Sequence[Row]) -> list[Made]:
    """The windows that count, as they were made, in the order of time; one an item and day."""
    first_on: dict[tuple[object, ...], date] = {}
    counted: dict[tuple[object, ...], Row] = {}
    for row in sorted(rows, key=lambda row: (row["as_of"], row["id"])):
        place = row["item"], row["position"], row["body"].get("stored_set")
        begun = first_on.setdefault((*place, row["body"].get("known_on")), row["as_of"])
        if row["is_used"] or row["as_of"] == begun:
            counted[(*place, row["as_of"])] = row
    return [(_window(row["body"]), row["id"]) for row in counted.values()]


def _window(body: dict[str, Any]) -> DueWindow:
    return DueWindow.from_json({name: value for name, value in body.items() if name in _WINDOW_FIELDS})


def _looked_back(
    shop: Shop, histories: dict[int, CarHistory], made: dict[int, list[Made]], priors: ShopPriors
) -> Iterator[tuple[int, DueWindow]]:
    """What would have been forecast after each inspection that no kept window followed before the next."""
    from followup.core.forecast.due import forecast_cars

    cut, by_code = [], {}
    for vehicle_id, history in histories.items():
        by_code[history.vehicle.code] = vehicle_id
        days = sorted({one.on for one in history.readings})
        as_of = {window.as_of for window, _ in made[vehicle_id]}
        for on, following in pairwise(days):
            if not any(on <= one < following for one in as_of):
                cut.append(history.until(on))
    for window in forecast_cars(cut, "last", limits=shop.rules.action_limits, priors=priors, with_ahead=True):
        yield by_code[window.vehicle], window
