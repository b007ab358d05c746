"""An item that a shop adds without code: a row of plain values, and the item of the catalogue that it becomes.

A row says how the item is taken, where it is due and what usually becomes of it. Spreads that it does not state are the
usual ones of its kind, sized by the way from new to the limit: assumptions, taken from the middle of the shipped items.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, fields
from typing import Any, Literal

from followup.core.item import (
    AMOUNTS_BELOW_FULL,
    LEVELS,
    AsFound,
    DistanceWear,
    Fall,
    Field,
    Interval,
    Item,
    Job,
    Level,
    Life,
    Limit,
    Looks,
    Rise,
    WearModel,
    WearPrior,
)
from followup.core.vehicle import POWERTRAINS, Vehicle

# No shipped item has such a code, in this version or a later one.
PREFIX = "own_"
LANGUAGES = ("en", "es")
SKILLS = ("general", "tires", "brakes", "electric")
Kind = Literal["distance", "year", "life", "interval", "level", "looks", "found"]
# What each kind is, in a manager's words.
KINDS: dict[Kind, str] = {
    "distance": "measured, and wears with the miles driven",
    "year": "measured, and goes with time",
    "life": "ages: lasts about so many months, or miles",
    "interval": "due after so many months or miles, whichever comes first",
    "level": "a level that runs low",
    "looks": "judged by its looks",
    "found": "works or does not, on the day",
}
# The units that are known; a shop may use a short word of its own besides.
UNITS: dict[str, tuple[str, ...]] = {
    "mm": ("mm", "32nds"),
    "32nds": ("32nds", "mm"),
    "in": ("in", "mm"),
    "psi": ("psi", "kPa", "bar"),
    "F": ("F", "C"),
    "percent": ("percent",),
    "ppm": ("ppm",),
    "V": ("V",),
    "A": ("A",),
}
# What can be found on the day: the first word is fine, the last is due now, what lies between is looked at again.
FOUND: dict[str, tuple[str, ...]] = {
    "works": ("works", "worn", "does_not_work"),
    "tight": ("tight", "some_play", "loose"),
    "dry": ("dry", "damp", "dripping"),
    "clear": ("clear", "chip", "crack"),
    "there": ("works", "does_not_work", "missing"),
}
DAYS_A_MONTH = 365.25 / 12
DAYS_A_YEAR = 365.25
_STEPS = (1.0, 0.5, 0.1, 0.01, 0.001)


@dataclass(frozen=True)
class Spreads:
    """What a row may state of its spreads; None: the usual one of its kind. Units as in `core.item.WearPrior`."""

    new_spread: float | None = None
    between_cars: float | None = None
    between_items: float | None = None
    reading_error: float | None = None
    gauge_step: float | None = None
    mate_error: float | None = None
    replaced_at: float | None = None
    replaced_spread: float | None = None
    log_spread: float | None = None


@dataclass(frozen=True)
class OwnItem:
    """One row. Numbers are in `unit`; `per_1000_miles` and `per_year` are how much it goes towards its limit.

    `positions` () is the car as a whole. `words` are the customers' words by language: name, many, what, why, work,
    and where they differ from the usual ones ahead, at_limit, last_done, number, amount, ending.
    """

    code: str
    name: str
    part: Literal["reception", "lift"]
    kind: Kind
    work: str
    skill: Literal["general", "tires", "brakes", "electric"]
    hours: float
    positions: tuple[str, ...] = ()
    unit: str = ""
    falls: bool = True
    least: float | None = None
    most: float | None = None
    action_limit: float | None = None
    legal_limit: float | None = None
    new_value: float | None = None
    per_1000_miles: float | None = None
    per_year: float | None = None
    months: float | None = None
    miles: float | None = None
    looks: tuple[str, ...] = ()
    found: str = ""
    powertrains: tuple[str, ...] = POWERTRAINS
    by_axle: bool = False
    is_top_off_free: bool = False
    is_in_use: bool = True
    spreads: Spreads = Spreads()
    words: Mapping[str, Mapping[str, str]] = field(default_factory=dict)

    def row(self) -> dict[str, Any]:
        """The row as plain JSON, without what is left out or as usual; `read_own_item` makes the same of it."""
        kept: dict[str, Any] = {}
        for one in fields(self):
            value = getattr(self, one.name)
            if one.name in ("falls", "spreads", "words"):
                continue
            if one.name == "is_in_use" or not (value is None or value is False or value in ("", ())):
                kept[one.name] = list(value) if isinstance(value, tuple) else value
        stated = {name: value for name, value in vars(self.spreads).items() if value is not None}
        if self.unit:
            kept["direction"] = "falls" if self.falls else "rises"
        for language, words in self.words.items():
            kept[language] = {name: text for name, text in words.items() if text}
        return {**kept, "spreads": stated} if stated else kept

    @staticmethod
    def of_row(row: Mapping[str, Any]) -> OwnItem:
        """What `row` made, unchecked; keys that this version does not know are left out."""
        known = {one.name for one in fields(OwnItem)} - {"falls", "spreads", "words"}
        kept: dict[str, Any] = {}
        for name in known & set(row):
            kept[name] = tuple(row[name]) if isinstance(row[name], list) else row[name]
        return OwnItem(
            **kept,
            falls=row.get("direction", "falls") == "falls",
            spreads=Spreads(**row.get("spreads", {})),
            words={language: row[language] for language in LANGUAGES if language in row},
        )


@dataclass(frozen=True)
class SamePrior:
    """The same is expected of every car and position."""

    prior: WearPrior

    def __call__(self, vehicle: Vehicle, position: str) -> WearPrior:
        """What is expected there."""
        del vehicle, position
        return self.prior


def item_of(own: OwnItem) -> Item:
    """The item of the catalogue that a row becomes. Its words reach customers only if they are in `own.words`."""
    return Item(
        code=own.code,
        words=own.name,
        part=own.part,
        fields=tuple(_fields(own)),
        models=tuple(_models(own)),
        job=Job(own.work, own.skill, own.hours),
        positions=own.positions or ("",),
        unit=own.unit or None,
        falls=own.falls,
        action_limit=None if own.action_limit is None else Limit(own.action_limit, own.unit),
        legal_limit=None if own.legal_limit is None else Limit(own.legal_limit, own.unit, "legal"),
        powertrains=own.powertrains,
        is_top_off_free=own.is_top_off_free,
        is_brakes_or_tires=own.skill in ("brakes", "tires"),
        measured_by=("value",) if own.unit else (),
        is_in_use=own.is_in_use,
        phrases=_phrases(own),
    )


def _fields(own: OwnItem) -> list[Field]:
    distance = ("mi", "km")
    found: list[Field] = []
    if own.unit:
        found.append(Field("value", "number", "Measured", UNITS.get(own.unit, (own.unit,)), own.least, own.most))
    if own.kind == "level":
        found.append(Field("level", "choice", "Level", choices=LEVELS))
    if own.kind == "found":
        found.append(Field("found_as", "choice", "Found", choices=FOUND[own.found]))
    if own.looks:
        found.append(Field("looks", "choice", "Looks", choices=own.looks))
    if own.kind in ("year", "life"):
        found.append(Field("changed_on", "date", "Last changed on"))
    if own.kind == "interval":
        found += [Field("done_on", "date", "Last done on"), Field("due_on", "date", "Due on, by the maker")]
        found.append(Field("due_odometer", "number", "Due at, by the maker", distance, 0, 2_000_000))
    if own.kind == "interval" or (own.kind == "life" and own.miles):
        found.append(Field("done_odometer", "number", "Odometer then", distance, 0, 2_000_000))
    return found


def _models(own: OwnItem) -> list[WearModel]:
    looks: list[WearModel] = [Looks()] if own.looks else []
    if own.kind == "distance":
        return [DistanceWear(SamePrior(wear_prior(own))), *looks]
    if own.kind == "year":
        return [_by_year(own), Life(_span(own) / (own.per_year or 1.0) * DAYS_A_YEAR, _log_spread(own)), *looks]
    if own.kind == "life":
        days = (own.months or 0.0) * DAYS_A_MONTH
        return [*looks, Life(days, _log_spread(own), own.miles)]
    if own.kind == "interval":
        return [_interval(own)]
    if own.kind == "level":
        return [_level(own), *looks]
    if own.kind == "found":
        states = FOUND[own.found]
        return [AsFound(states, states[-1:])]
    return looks


def _span(own: OwnItem) -> float:
    """The way from new to the limit."""
    return abs((own.action_limit or 0.0) - (own.new_value or 0.0))


def _usual_log_spread(kind: Kind) -> float:
    """As wiper blades and filters (life), fluids (level), brake fluid (year) have it."""
    return {"life": 0.35, "level": 0.6}.get(kind, 0.3)


def _log_spread(own: OwnItem) -> float:
    return own.spreads.log_spread or _usual_log_spread(own.kind)


def _step(way: float, unit: str) -> float:
    """The usual step of a gauge that reads `way` in a handful of steps; half a millimeter is the coarsest there."""
    step = next((one for one in _STEPS if one <= way), _STEPS[-1])
    return min(step, 0.5) if unit == "mm" else step


def wear_prior(own: OwnItem) -> WearPrior:
    """What is expected of an item that wears with distance. Shares of the way from new to the limit: tread, pads,
    shoes and rotors lie around them."""
    way, stated = _span(own), own.spreads
    beyond = -0.1 * way if own.falls else 0.1 * way
    usual = Spreads(
        new_spread=0.15 * way, between_cars=0.40, between_items=0.25, reading_error=0.09 * way,
        gauge_step=_step(way / 5, own.unit), mate_error=0.09 * way, replaced_at=(own.action_limit or 0.0) + beyond,
        replaced_spread=0.2 * way,
    )  # fmt: skip
    return WearPrior(
        new_value=own.new_value or 0.0,
        rate_per_1000_miles=own.per_1000_miles or 0.0,
        usually_replaced_at=_either(stated, usual, "replaced_at"),
        **{name: _either(stated, usual, name) for name in _OF_WEAR},
    )


_OF_WEAR = (
    "new_spread",
    "between_cars",
    "between_items",
    "reading_error",
    "gauge_step",
    "mate_error",
    "replaced_spread",
)


def _either(stated: Spreads, usual: Spreads, name: str) -> float:
    found = getattr(stated, name)
    return float(getattr(usual, name) if found is None else found)


def _by_year(own: OwnItem) -> Rise | Fall:
    """Shares of the way as brake fluid has them (3 % of water)."""
    way, stated = _span(own), own.spreads
    usual = Spreads(
        new_spread=way / 15, reading_error=way / 10, gauge_step=_step(way / 10, own.unit), mate_error=way / 30,
        replaced_spread=way / 3,
    )  # fmt: skip
    made = Rise if not own.falls else Fall
    return made(
        start=own.new_value or 0.0,
        per_year=own.per_year or 0.0,
        log_spread=_log_spread(own),
        replaced_beyond=way / 6 if stated.replaced_at is None else abs(stated.replaced_at - (own.action_limit or 0.0)),
        **{
            name: _either(stated, usual, name)
            for name in ("new_spread", "reading_error", "gauge_step", "mate_error", "replaced_spread")
        },
    )


def _interval(own: OwnItem) -> Interval:
    """Recommended as long before its end as an oil service is (30 of 274 days, 500 of 7,500 miles), never longer."""
    days = None if own.months is None else own.months * DAYS_A_MONTH
    notice_days = 0.0 if days is None else min(30.0, days * 30 / 274)
    return Interval(days, own.miles, notice_days, 0.0 if own.miles is None else min(500.0, own.miles * 500 / 7500))


def _level(own: OwnItem) -> Level:
    """One amount lies between the mark and low: it is used in the months or miles of the row."""
    per_day = None if own.months is None else 1 / (own.months * DAYS_A_MONTH)
    per_1000_miles = None if own.months is not None or own.miles is None else 1000 / own.miles
    return Level(AMOUNTS_BELOW_FULL, "low", per_day, per_1000_miles, _log_spread(own))


def _phrases(own: OwnItem) -> dict[str, dict[str, Any]]:
    """The customers' words as a phrase file holds them."""
    return {language: _phrase_file(own, language, words) for language, words in own.words.items()}


def _phrase_file(own: OwnItem, language: str, words: Mapping[str, str]) -> dict[str, Any]:
    one, many = words["name"], words.get("many") or words["name"]
    if own.positions:
        one, many = (f"{{position}} {name}" if language == "en" else f"{name} {{position}}" for name in (one, many))
    ending = words.get("ending", "")
    made: dict[str, Any] = {
        "one": one, "many": many, "what": words["what"], "why": words["why"], "work": words["work"],
        "by_axle": own.by_axle, "ending_one": ending, "ending_many": ending if ending.endswith("s") else f"{ending}s",
    }  # fmt: skip
    if not own.positions or language == "en":
        del made["ending_one"], made["ending_many"]
    if own.unit and words.get("number"):
        made["units"] = {own.unit: f"{{value}} {words['number']}"}
    return made | {name: words[name] for name in ("ahead", "at_limit", "last_done", "amount") if words.get(name)}
