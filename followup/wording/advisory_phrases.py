"""An advisory in a customer's words, as one more entry of the fact `items`: numbers with their day, what we suggest."""

from __future__ import annotations

from datetime import date

from followup.core.advisories import Advisory
from followup.core.items import BY_CODE
from followup.core.phrasing import phrase_past_day
from followup.core.vehicle import AXLES
from followup.wording.phrases import fill, item_name, item_phrases, measured_phrase
from followup.wording.shipped import phrase_file


def advisory_fact(language: str, advisory: Advisory, *, drives_on_right: bool, today: date) -> dict[str, str]:
    """One entry of the fact `items`; what was measured is told, never what is reckoned from it."""
    found = phrase_file(language, "advisories")[advisory.code]
    part = BY_CODE[advisory.spots[0].reading.item]
    name = item_name(
        language, part, AXLES.get(advisory.position, (advisory.position,)), drives_on_right=drives_on_right
    )
    when = phrase_past_day(advisory.on, today, language)
    said = _numbers(language, advisory)
    explained = item_phrases(language, BY_CODE[found["item"]])
    return {
        "name": name,
        "measured": f"{said['low']}, {said['high']}",
        "when": when,
        "month": "",
        "line": fill(found["line"], place=name[:1].upper() + name[1:], when=when, **said),
        "what": explained.what,
        "why": explained.why,
        "work": found["work"],
    }


def _numbers(language: str, advisory: Advisory) -> dict[str, str]:
    """Lowest and highest as they were read, and the lowest of each axle."""
    part = BY_CODE[advisory.spots[0].reading.item]
    lowest = {place: _lowest(language, advisory, sides) for place, sides in AXLES.items()}
    if advisory.code in ("tire_across", "pad_inner_outer"):
        low, high = advisory.lowest, advisory.highest
        unit_low = unit_high = advisory.unit
    else:
        ordered = sorted(advisory.spots, key=lambda spot: spot.value_in(advisory.unit))
        low, unit_low, high, unit_high = ordered[0].lowest, ordered[0].unit, ordered[-1].lowest, ordered[-1].unit
    return {
        "low": measured_phrase(language, part, low, unit_low),
        "high": measured_phrase(language, part, high, unit_high),
        **lowest,
    }


def _lowest(language: str, advisory: Advisory, sides: tuple[str, ...]) -> str:
    spots = [spot for spot in advisory.spots if spot.position in sides]
    if not spots:
        return ""
    lowest = min(spots, key=lambda spot: spot.value_in(advisory.unit))
    return measured_phrase(language, BY_CODE[lowest.reading.item], lowest.lowest, lowest.unit)
