"""Learn the shop's own priors from its cars, and keep them where they foretell no worse.

1. At night in the shop's zone, where something was inspected, done or told since the last run (or when asked to).
2. The histories of all cars are read, some at a time.
3. `core/forecast/learn.py` fits, foretells last readings without them, and decides part by part.
4. What came of it is kept as a version with its day, its number of cars and both scores; it is used where it differs
   from what is in use. Forecasts then are all made anew by the next tick. If the process dies before, nothing was
   done, and the next night learns.

Who sets the shop back to the published values stops the nightly learning until an earlier version is brought back.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime
from itertools import islice
from typing import Any
from zoneinfo import ZoneInfo

from followup.core.forecast.history import CarHistory
from followup.core.forecast.learned import Learned, differ
from followup.core.shop import Shop
from followup.storage import learned_priors, people, shops
from followup.storage.histories import history_of
from followup.storage.shop_priors import priors_of
from followup.storage.store import Store

NIGHTLY = "nightly"
# Hours of the shop's night: planning looks every six hours at the latest, so that none is stepped over.
_NIGHT_ENDS_HOUR = 6
_CARS_AT_ONCE = 100


@dataclass(frozen=True)
class LearnedRun:
    """One run: the version under which it is kept, and whether forecasts go by it from now on."""

    version: int
    learned: Learned
    is_used: bool


class ShopChangedMeanwhile(Exception):
    """Somebody else learned or went back meanwhile: look again."""


def learn_priors(
    store: Store, shop_id: int, now: datetime, author: str, progress: Callable[[int], object] | None = None
) -> LearnedRun:
    """Learn from all cars of the shop and keep what came of it; `progress` is told of each car, up to five times."""
    # Imported here: numpy and scipy take longer than a page may.
    from followup.core.forecast.learn import learn

    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
        in_use, seen = priors_of(connection, shop), learned_priors.newest(connection, shop_id)
    learned = learn(_histories(store, shop, progress), in_use, progress)
    is_used = learned.is_news and differ(learned.priors, in_use)
    version = _keep(store, shop_id, now, author, "learned", is_used, learned.to_json(), seen["version"] if seen else 0)
    return LearnedRun(version, learned, is_used)


def learn_at_night(store: Store, shop_id: int, now: datetime) -> LearnedRun | None:
    """The same where it is night at the shop and there is news; None where nothing was to be learned."""
    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
        last, used = learned_priors.newest(connection, shop_id), learned_priors.in_use(connection, shop_id)
        since = last["at"] if last else datetime.min.replace(tzinfo=now.tzinfo)
        has_news = learned_priors.has_news(connection, shop_id, since)
    zone = ZoneInfo(shop.zone)
    tonight = now.astimezone(zone)
    is_done = last is not None and since.astimezone(zone).date() == tonight.date()
    is_set_back = used is not None and used["source"] == "published"
    if tonight.hour >= _NIGHT_ENDS_HOUR or is_done or is_set_back or not has_news:
        return None
    return learn_priors(store, shop_id, now, NIGHTLY)


def count_cars(store: Store, shop_id: int) -> int:
    """How many cars `learn_priors` would look at."""
    with store.read() as connection:
        return len(people.all_vehicles(connection, shop_id))


def newest_version(store: Store, shop_id: int) -> int:
    """The number of the newest version; 0 before the first."""
    with store.read() as connection:
        newest = learned_priors.newest(connection, shop_id)
    return int(newest["version"]) if newest else 0


def go_by_published(store: Store, shop_id: int, author: str, now: datetime, based_on: int) -> int:
    """Set the shop back to the published values, until a version is brought back; the new version's number.

    `based_on` is the newest version that was seen. Raises `ShopChangedMeanwhile` where there is a newer one.
    """
    return _keep(store, shop_id, now, author, "published", True, None, based_on)


def bring_back(store: Store, shop_id: int, version: int, author: str, now: datetime, based_on: int) -> int:
    """Go by an earlier version again, and learn on from there; the new version's number.

    Raises `LookupError` where there is no such version, `ShopChangedMeanwhile` as above.
    """
    with store.read() as connection:
        found = learned_priors.version_of(connection, shop_id, version)
    if found is None or found["body"] is None:
        raise LookupError(f"There is no learned version {version}.")
    return _keep(store, shop_id, now, author, "brought_back", True, found["body"], based_on)


def _keep(
    store: Store,
    shop_id: int,
    now: datetime,
    author: str,
    source: str,
    is_used: bool,
    body: dict[str, Any] | None,
    based_on: int,
) -> int:
    with store.write() as connection:
        version = learned_priors.keep(connection, shop_id, now, author, source, is_used, body, based_on)
        if version is None:
            raise ShopChangedMeanwhile
        if source != "learned":
            shops.note(connection, shop_id, now, author, f"learned priors: {source}", f"version {version}")
    return version


def _histories(store: Store, shop: Shop, progress: Callable[[int], object] | None) -> list[CarHistory]:
    with store.read() as connection:
        waiting = iter([one["id"] for one in people.all_vehicles(connection, shop.id)])
    found: list[CarHistory] = []
    while batch := list(islice(waiting, _CARS_AT_ONCE)):
        with store.read() as connection:
            found += [one for one in (history_of(connection, shop, it) for it in batch) if one is not None]
        if progress:
            progress(len(batch))
    return found
