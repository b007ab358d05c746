"""An invented shop's cars as the planner sees them, with their windows: what a what-if and its replay begin with."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta

import numpy as np
from scipy.special import ndtri

from followup.core.consent import ConsentStanding
from followup.core.customer import Person, Phone
from followup.core.forecast.window import CURVE_CHANCES, DueCurve
from followup.core.planning.picture import CarPicture, DueItem
from followup.core.planning.what_if.cars import CarAhead, ItemAhead, car_ahead, may_matter
from followup.core.shop import Shop
from followup.core.visit import Visit

SHOP = Shop(1, "Many Roads Auto", "America/Chicago", "+13125550100", "+13125550101", state="IL")
NOW = datetime(2026, 12, 1, 18, 0, tzinfo=UTC)
TODAY = date(2026, 12, 1)
_ALL = ConsentStanding(frozenset({"visits", "upkeep", "offers"}), False, None)
_PROBITS = ndtri(np.array(CURVE_CHANCES))
# (item, positions, work, skill, hours, log of the median days left, its spread over cars, the window's own spread,
# legal limit after so many times the days)
_KINDS = (
    ("tire_tread", ("front_left", "front_right", "rear_left", "rear_right"), "four tires", "tires", 1.2, 6.5, 0.8, 0.3,
     1.3),
    ("brake_pad", ("front_left", "front_right"), "front pads", "brakes", 1.0, 6.6, 0.8, 0.35, 1.4),
    ("brake_pad", ("rear_left", "rear_right"), "rear pads", "brakes", 1.0, 6.9, 0.8, 0.35, 1.4),
    ("oil_service", ("",), "oil", "general", 0.4, 4.9, 0.5, 0.15, None),
    ("battery", ("",), "battery", "electric", 0.4, 7.0, 0.6, 0.6, None),
)  # fmt: skip


def many_cars(count: int, seed: int) -> tuple[list[CarPicture], list[CarAhead]]:
    """So many cars, most on a phone of their own, visited within the last year."""
    random = np.random.default_rng(seed)
    pictures, cars = [], []
    for number in range(count):
        phone = number if number % 8 else max(number - 1, 0)
        visited = int(random.integers(15, 330))
        picture, items = _car(number, phone, visited, random)
        pictures.append(picture)
        cars.append(car_ahead(picture, [one for one in items if may_matter(one)], NOW))
    return pictures, cars


def _car(number: int, phone: int, visited: int, random: np.random.Generator) -> tuple[CarPicture, list[ItemAhead]]:
    on, items = TODAY - timedelta(days=visited), []
    for item, places, work, skill, hours, middle, over_cars, spread, legal in _KINDS:
        median = float(np.exp(random.normal(middle, over_cars))) + visited / 2
        for place in places:
            mine = median * float(np.exp(random.normal(0.0, 0.08)))
            items.append(
                ItemAhead(
                    (item, place), _curve(mine, spread), visited, _curve(mine * legal, spread) if legal else None, work,
                    skill, hours, near_days=45.0, shared=0.85 if legal else 0.0,
                    near=_curve(max(mine - 45.0, 1.0), spread) if legal else None,
                )
            )  # fmt: skip
    at = NOW - timedelta(days=visited)
    due = tuple(DueItem(*one.at, 0.0, 0.0, on) for one in items)
    person = Person(phone + 1, f"P{phone}", "Ada")
    return CarPicture(
        SHOP, Phone(phone + 1, f"+1312555{phone % 10000:04d}", (SHOP.zone,), "mobile"), person, f"C{number}", _ALL, due,
        visits=(Visit(f"V{number}", at, at),),
    ), items  # fmt: skip


def _curve(median: float, spread: float) -> DueCurve:
    return DueCurve(0.0, tuple(float(day) for day in median * np.exp(spread * _PROBITS)))
