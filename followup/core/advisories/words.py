"""An advisory in plain words for staff: what was measured, the rule, what the trade does, how sure it is. No cause."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date

from followup.core.advisories.find import Advisory
from followup.core.advisories.present import Spot
from followup.core.phrasing import phrase_list, phrase_past_day
from followup.core.rotation import rotation_words
from followup.core.vehicle import PLACE_WORDS, WALKING_ORDER, Vehicle

_RULES = {
    "pad_inner_outer": "More than {bound} between inner and outer pad",
    "pad_sides": "More than {bound} between left and right pad",
    "tire_four": "More than {bound} between the four tires of an all-wheel drive",
    "tire_across": "More than {bound} across one tire",
    "tire_axle": "More than {bound} between the tires of one axle",
    "tire_rotation": "{bound} or more between front and rear",
}
_DONE = {
    "pad_inner_outer": "slides and caliper looked at",
    "pad_sides": "slides and caliper looked at",
    "tire_four": "the four belong together, measure them against the handbook",
    "tire_across": "alignment and pressure check",
    "tire_axle": "alignment and pressure check",
    "tire_rotation": "rotation",
}
_LOWER = {
    "inner edge": "lower at the inner edge",
    "outer edge": "lower at the outer edge",
    "both edges": "lower at both edges",
    "center": "lower in the center",
    "one side": "lower on one side",
}


def title(advisory: Advisory) -> str:
    """What it is about: "Left front tire", "Front brake pads", "The four tires"."""
    place = PLACE_WORDS[advisory.position].capitalize()
    if advisory.code.startswith("pad_"):
        return f"{place} brake pads"
    if advisory.code == "tire_across":
        return f"{place} tire" if advisory.position else "One tire"
    return f"{place} tires" if advisory.code == "tire_axle" else "The four tires"


def measured(advisory: Advisory, today: date) -> str:
    """What was read and when, in the order of the sheet, and how far it lies apart."""
    if advisory.code == "tire_across":
        said = _grooves(advisory.spots[0])
    elif advisory.code == "pad_inner_outer":
        entered, unit = advisory.spots[0].reading.entered, advisory.unit
        said = f"inner {amount(entered.inner or 0, unit)}, outer {amount(entered.outer or 0, unit)}"
    else:
        around = sorted(advisory.spots, key=lambda spot: WALKING_ORDER.index(spot.position or spot.read_at))
        said = ", ".join(f"{_place(spot)} {amount(spot.lowest, spot.unit)}" for spot in around)
    days = phrase_list([phrase_past_day(day, today, "en") for day in sorted({one.on for one in advisory.spots})], "en")
    apart = f"{amount(advisory.difference, advisory.unit)} apart"
    apart = f"front and rear {apart} on average" if advisory.code == "tire_rotation" else apart
    lower = f", {_LOWER[advisory.lowest_at]}" if advisory.lowest_at else ""
    return f"{said} on {days}: {apart}{lower}{_moved(advisory.spots)}."


def asks_for(advisory: Advisory, vehicle: Vehicle) -> str:
    """The rule with its bound, and what the trade does about it; for a rotation also how this car's tires may go."""
    rule = _RULES[advisory.code].format(bound=amount(advisory.bound, advisory.unit))
    how = f" ({rotation_words(vehicle)})" if advisory.code == "tire_rotation" else ""
    return f"{rule}: {_DONE[advisory.code]}{how}."


def in_short(advisory: Advisory) -> str:
    """What it is about and what is done, in a few words: "left front tire, alignment and pressure check"."""
    name = title(advisory)
    return f"{name[:1].lower()}{name[1:]}, {_DONE[advisory.code]}"


def certainty(advisory: Advisory) -> str:
    """How surely the true difference is beyond the bound, in chances out of twenty, as the due chart counts."""
    return f"Truly so {min(int(advisory.chance * 20 + 0.5), 19)} times in 20."


def amount(value: float, unit: str) -> str:
    """A number with its unit as on the sheet: "5/32", "3.5 mm"."""
    shown = f"{round(value, 2):g}"
    return f"{shown}/32" if unit == "32nds" else f"{shown} {unit}"


def _grooves(spot: Spot) -> str:
    grooves = spot.reading.entered.across
    read = phrase_list([amount(one, spot.unit) for one in grooves], "en")
    return f"{read} (outer, center, inner)" if len(grooves) == 3 else read


def _place(spot: Spot) -> str:
    return PLACE_WORDS[spot.position or spot.read_at]


def _moved(spots: Iterable[Spot]) -> str:
    """Where a rotation was told since; of a single tire also where it stood when it was read."""
    moved = [spot for spot in spots if spot.is_moved]
    if not moved:
        return ""
    place = f" at {PLACE_WORDS[moved[0].read_at]}," if len(moved) == 1 else ""
    return f"; read{place} before a rotation"
