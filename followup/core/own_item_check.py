"""Reads an item that a shop adds from plain values (a form, a JSON line), or says all that is wrong with it, by field.

The keys of a row are the fields of `OwnItem`; `falls` is written `"direction": "falls" | "rises"`, spreads stand under
`spreads`, the customers' words under the language (`en`, `es`). A row of a file needs no words.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Container, Iterable, Mapping
from typing import Any, get_args

from followup.core.inspection_check import PERCENT, Fault
from followup.core.item import LOOKS
from followup.core.own_item import FOUND, KINDS, LANGUAGES, PREFIX, SKILLS, UNITS, Kind, OwnItem, Spreads
from followup.core.vehicle import AXLES, POWERTRAINS, WALKING_ORDER

# Which numbers each kind of item needs; one of those that a dash joins is enough.
NEEDS: dict[Kind, tuple[str, ...]] = {
    "distance": ("unit", "least", "most", "new_value", "action_limit", "per_1000_miles"),
    "year": ("unit", "least", "most", "new_value", "action_limit", "per_year"),
    "life": ("months",),
    "interval": ("months-miles",),
    "level": ("months-miles",),
    "looks": ("looks",),
    "found": ("found",),
}
_MEASURED = ("unit", "direction", "least", "most", "action_limit", "legal_limit")
# What else each kind takes.
TAKES: dict[Kind, tuple[str, ...]] = {
    "distance": (*_MEASURED, "new_value", "per_1000_miles", "looks", "spreads"),
    "year": (*_MEASURED, "new_value", "per_year", "looks", "spreads"),
    "life": (*_MEASURED, "months", "miles", "looks", "spreads"),
    "interval": ("months", "miles"),
    "level": ("months", "miles", "looks", "is_top_off_free", "spreads"),
    "looks": (*_MEASURED, "looks"),
    "found": ("found", "looks"),
}
OF_A_KIND = tuple(dict.fromkeys(name for names in TAKES.values() for name in names))
EVERYBODY = (
    "code", "name", "part", "kind", "work", "skill", "hours", "positions", "powertrains", "by_axle", "is_in_use",
)  # fmt: skip
LENGTHS = {"name": 40, "unit": 12, "work": 60}
WORD_LENGTHS = {
    "name": 40, "many": 40, "what": 90, "why": 110, "work": 50, "ahead": 50, "at_limit": 60, "last_done": 40,
    "number": 20, "amount": 30, "ending": 2,
}  # fmt: skip
NEEDED_WORDS = ("name", "what", "why", "work")
# What is filled in when the text leaves.
HOLDS = {"ahead": "{month}", "last_done": "{when}"}
ENDINGS = ("", "o", "a", "os", "as")
NUMBERS = ("least", "most", "action_limit", "legal_limit", "new_value")
MOST_NUMBER = 100_000.0
# Above nothing, with what can be in a workshop.
ABOVE: dict[str, tuple[float, float]] = {
    "per_1000_miles": (0.00001, 10_000), "per_year": (0.0001, 100_000), "months": (0.25, 600),
    "miles": (100, 1_000_000), "hours": (0.1, 40),
}  # fmt: skip
# How long the way from new to the limit may take: anything else is a slip of the finger or of the unit.
LEAST_MILES, MOST_MILES = 500.0, 2_000_000.0
LEAST_YEARS, MOST_YEARS = 0.02, 60.0
_CODE = re.compile(rf"{PREFIX}[a-z0-9_]{{1,60}}")
_UNIT = re.compile(r"[^\W\d_][\w./°-]*(?: [\w./°-]+)*")


class BadItem(Exception):
    """This item cannot be taken: see its faults."""

    def __init__(self, faults: Iterable[Fault]) -> None:
        self.faults = tuple(faults)
        super().__init__("; ".join(f"{one.field}: {one.says}" if one.field else one.says for one in self.faults))


def code_of(name: str, taken: Container[str]) -> str:
    """A code made from a name that is in no catalogue: "Roof rack bolts" is own_roof_rack_bolts, the second of that
    name own_roof_rack_bolts_2."""
    plain = unicodedata.normalize("NFKD", name).encode("ascii", "ignore").decode().lower()
    stem = PREFIX + (re.sub(r"[^a-z0-9]+", "_", plain).strip("_")[:40].strip("_") or "item")
    number, code = 1, stem
    while code in taken:
        number += 1
        code = f"{stem}_{number}"
    return code


def read_own_item(raw: Mapping[str, Any], taken: Container[str] = (), *, needs_words: bool = True) -> OwnItem:
    """The item of a row. Without a `code` one is made that is not in `taken`. Raises `BadItem` with all faults."""
    row = _Row(raw)
    values = row.values(taken)
    words = {
        language: row.words(language, values)
        for language in LANGUAGES
        if needs_words or raw.get(language) not in (None, {})
    }
    faults = [*row.faults, *_of_kind(row, values), *_that_fits(values)]
    if faults:
        raise BadItem(dict.fromkeys(faults))
    return OwnItem(**values, words=words)


class _Row:
    """One row as it is read; what cannot be read becomes a fault and counts as left out."""

    def __init__(self, raw: Mapping[str, Any]) -> None:
        self.raw = {name: value for name, value in raw.items() if value not in (None, "", [], ())}
        self.faults: list[Fault] = []
        for name in self.raw:
            if name not in (*EVERYBODY, *OF_A_KIND, *LANGUAGES):
                self.say(name, "is not known here: leave it out")

    def say(self, field: str, says: str) -> None:
        self.faults.append(Fault(field, says))

    def values(self, taken: Container[str]) -> dict[str, Any]:
        values: dict[str, Any] = {name: self.text(name, most, needed=name != "unit") for name, most in LENGTHS.items()}
        values["code"] = self.code(values["name"], taken)
        values["part"] = self.one_of("part", ("reception", "lift"))
        values["kind"] = self.one_of("kind", tuple(KINDS))
        values["skill"] = self.one_of("skill", SKILLS)
        values["falls"] = self.one_of("direction", ("falls", "rises"), "falls") == "falls"
        values["found"] = self.one_of("found", tuple(FOUND), "")
        values["hours"] = self.number("hours", needed=True)
        for name in (*NUMBERS, "per_1000_miles", "per_year", "months", "miles"):
            values[name] = self.number(name)
        values["positions"] = tuple(sorted(self.some_of("positions", WALKING_ORDER[:-1]), key=WALKING_ORDER.index))
        values["looks"] = self.looks()
        values["powertrains"] = self.some_of("powertrains", POWERTRAINS) or POWERTRAINS
        for name, usual in (("by_axle", False), ("is_top_off_free", False), ("is_in_use", True)):
            values[name] = self.yes_no(name, usual)
        values["spreads"] = self.spreads()
        return values

    def code(self, name: str, taken: Container[str]) -> str:
        code = self.raw.get("code")
        if code is None:
            return code_of(name, taken)
        if not isinstance(code, str) or not _CODE.fullmatch(code):
            self.say("code", f"write it like {PREFIX}roof_rack, or leave it out: it is made from the name")
        elif code in taken:
            self.say("code", f"{code} is there already: give this one another")
        return str(code)

    def text(
        self, name: str, most: int, *, needed: bool, where: str = "", told: Mapping[str, Any] | None = None
    ) -> str:
        value = (self.raw if told is None else told).get(name)
        field = f"{where}{name}"
        if value in (None, ""):
            if needed:
                self.say(field, "is missing: fill it in")
            return ""
        if not isinstance(value, str) or not value.isprintable():
            self.say(field, "write it as plain words on one line")
            return ""
        plain = " ".join(value.split())
        if len(plain) > most:
            self.say(field, f"give at most {most} characters")
        return plain

    def number(self, name: str, *, needed: bool = False) -> float | None:
        value = self.raw.get(name)
        if value is None:
            if needed:
                self.say(name, "is missing: fill it in")
            return None
        if isinstance(value, bool) or not isinstance(value, int | float) or value != value:
            self.say(name, "give a number, like 4 or 4.5")
            return None
        least, most = ABOVE.get(name, (-MOST_NUMBER, MOST_NUMBER))
        if not least <= value <= most:
            self.say(name, f"give {least:g} to {most:,g}".replace("e-05", "e-5"))
        return float(value)

    def one_of(self, name: str, allowed: tuple[str, ...], usual: str | None = None) -> str:
        value = self.raw.get(name, usual)
        if value is None:
            self.say(name, f"is missing: use one of {', '.join(allowed)}")
        elif value != usual and value not in allowed:
            self.say(name, f"use one of {', '.join(allowed)}")
            return usual or allowed[0]
        return allowed[0] if value is None else str(value)

    def some_of(self, name: str, allowed: Iterable[str]) -> tuple[str, ...]:
        value, known = self.raw.get(name, []), tuple(allowed)
        if not isinstance(value, list | tuple) or any(one not in known for one in value):
            self.say(name, f"give a list of {', '.join(known)}")
            return ()
        return tuple(dict.fromkeys(value))

    def looks(self) -> tuple[str, ...]:
        found = self.some_of("looks", LOOKS)
        return tuple(one for one in LOOKS if one == "even" or one in found) if found else ()

    def yes_no(self, name: str, usual: bool) -> bool:
        value = self.raw.get(name, usual)
        if not isinstance(value, bool):
            self.say(name, "say true or false")
        return value is True

    def spreads(self) -> Spreads:
        stated = self.raw.get("spreads", {})
        if not isinstance(stated, Mapping):
            self.say("spreads", "write it as names and numbers")
            return Spreads()
        good = {}
        for name, value in stated.items():
            if name not in Spreads.__dataclass_fields__:
                self.say(f"spreads.{name}", f"is not known: use {', '.join(Spreads.__dataclass_fields__)}")
            elif isinstance(value, bool) or not isinstance(value, int | float) or not _is_spread(name, value):
                self.say(f"spreads.{name}", "give a number above 0")
            else:
                good[name] = float(value)
        return Spreads(**good)

    def words(self, language: str, values: Mapping[str, Any]) -> dict[str, str]:
        given, where = self.raw.get(language, {}), f"{language}."
        if not isinstance(given, Mapping):
            self.say(language, "write it as names and words")
            return {}
        for name in given:
            if name not in WORD_LENGTHS:
                self.say(f"{where}{name}", f"is not known: use {', '.join(WORD_LENGTHS)}")
        found = {
            name: self.text(name, most, needed=name in NEEDED_WORDS, where=where, told=given)
            for name, most in WORD_LENGTHS.items()
        }
        for name, text in found.items():
            self.check_braces(f"{where}{name}", text, HOLDS.get(name, ""))
        if found["ending"] not in ENDINGS:
            self.say(f"{where}ending", f"use one of {', '.join(ENDINGS[1:])}")
        if language == "es" and values["positions"] and not found["ending"]:
            self.say(f"{where}ending", "is missing: say how “delanter...” ends with this item")
        if values["unit"] and values["unit"] not in UNITS and not found["number"]:
            self.say(f"{where}number", "is missing: say how a customer reads the unit after the number")
        return {name: text for name, text in found.items() if text}

    def check_braces(self, field: str, text: str, holds: str) -> None:
        if text and holds and holds not in text:
            self.say(field, f"must hold {holds}: it is filled in when the text leaves")
        if re.search(r"[{}]", text.replace(holds, "") if holds else text):
            self.say(field, "takes no braces" + (f" but {holds}" if holds else ""))


def _is_spread(name: str, value: float) -> bool:
    return abs(value) <= MOST_NUMBER if name == "replaced_at" else 0 < value <= MOST_NUMBER


def _of_kind(row: _Row, values: Mapping[str, Any]) -> Iterable[Fault]:
    """What the kind needs and is not there; what it does not take and is."""
    kind: Kind = values["kind"] if values["kind"] in get_args(Kind) else "looks"
    if "kind" not in row.raw:
        return
    needs = list(NEEDS[kind])
    if row.raw.get("unit") and kind in ("life", "looks"):
        needs += ["least", "most", "action_limit"]
    for need in needs:
        names = need.split("-")
        if not any(name in row.raw for name in names):
            yield Fault(names[0], f"is missing: {' or '.join(names)} is needed where an item is {KINDS[kind]}")
    for name in OF_A_KIND:
        if name in row.raw and name not in TAKES[kind] and row.raw[name] is not False:
            yield Fault(name, f"does not belong to an item that is {KINDS[kind]}: leave it out")
    if kind == "level" and {"months", "miles"} <= set(row.raw):
        yield Fault("miles", "give how long it lasts in months or in miles, not both")


def _that_fits(values: Mapping[str, Any]) -> Iterable[Fault]:
    """Values that do not fit each other."""
    unit = values["unit"]
    if unit in PERCENT and unit != "percent":
        yield Fault("unit", "write percent")
    elif unit in ("mi", "km"):
        yield Fault("unit", "miles and kilometers are the odometer's: choose an interval instead")
    elif unit and unit not in UNITS and not _UNIT.fullmatch(unit):
        yield Fault("unit", "write a short word, like clicks")
    for axle, sides in AXLES.items():
        if axle in values["positions"] and set(sides) & set(values["positions"]):
            yield Fault("positions", f"{axle} already means both its sides: choose the axle or its wheels")
    if values["is_top_off_free"] and values["skill"] in ("brakes", "tires"):
        yield Fault("is_top_off_free", "what belongs to brakes or tires is never topped off by itself")
    if values["by_axle"] and not values["positions"]:
        yield Fault("by_axle", "belongs to an item with positions: leave it out")
    yield from _in_range(values)
    yield from _in_order(values)


def _in_range(values: Mapping[str, Any]) -> Iterable[Fault]:
    least, most = values["least"], values["most"]
    if least is None or most is None:
        return
    if least >= most:
        yield Fault("most", "must be more than the least that can be")
        return
    for name in ("action_limit", "legal_limit", "new_value"):
        if values[name] is not None and not least <= values[name] <= most:
            yield Fault(name, f"lies outside what can be measured, {least:g} to {most:g}")


def _in_order(values: Mapping[str, Any]) -> Iterable[Fault]:
    """New lies before the action limit, and that before the legal one; the way between takes a sensible time."""
    limit, legal, new = values["action_limit"], values["legal_limit"], values["new_value"]
    sign, word = (1, "above") if values["falls"] else (-1, "below")
    if limit is not None and new is not None:
        if sign * (new - limit) <= 0:
            yield Fault("new_value", f"must lie {word} the action limit, or the direction is the other one")
            return
        yield from _in_time(abs(new - limit), values)
    if limit is not None and legal is not None and sign * (limit - legal) < 0:
        yield Fault("legal_limit", "comes before the action limit: the shop recommends first")
    if legal is not None and limit is None:
        yield Fault("action_limit", "is missing: give where the shop recommends, at the legal limit or before")


def _in_time(way: float, values: Mapping[str, Any]) -> Iterable[Fault]:
    per_1000_miles, per_year = values["per_1000_miles"], values["per_year"]
    if values["kind"] == "distance" and per_1000_miles:
        miles = way / per_1000_miles * 1000
        if not LEAST_MILES <= miles <= MOST_MILES:
            yield Fault("per_1000_miles", f"would be at its limit after {miles:,.0f} miles: look at the numbers again")
    if values["kind"] == "year" and per_year:
        years = way / per_year
        if not LEAST_YEARS <= years <= MOST_YEARS:
            yield Fault("per_year", f"would be at its limit after {years:,.2f} years: look at the numbers again")
