"""Items, readings and free services in a customer's words, from the phrase files, as facts for a template."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from typing import Any

from followup.core.item import Item
from followup.core.phrasing import phrase_list, phrase_month, phrase_number, phrase_past_day
from followup.core.vehicle import WALKING_ORDER
from followup.wording.shipped import NoSuchTemplate, phrase_file

_AXLE = {"front_left": "front", "front_right": "front", "rear_left": "rear", "rear_right": "rear"}
_MIRRORED = {"front_left": "front_right", "front_right": "front_left", "rear_left": "rear_right",
             "rear_right": "rear_left"}  # fmt: skip


@dataclass(frozen=True)
class ItemPhrases:
    """One item in plain words.

    `one` and `many` name it ("{position} tire", "{position} tires"); `ahead` says what is coming ("may be due around
    {month}"), `at_limit` that the number is where the shop recommends work, `last_done` when it was last changed or
    done; `what` and `why` answer questions;
    `work` is the work. `is_by_axle`: a customer hears "front brake pads", never one corner. The endings are those
    that Spanish positions take with this item ("llanta delantera", "llantas delanteras"); English has none. `amount` is
    how much of it is free where the shop tops it off.
    """

    code: str
    one: str
    many: str
    ahead: str
    at_limit: str
    last_done: str
    what: str
    why: str
    work: str
    is_by_axle: bool = False
    ending_one: str = ""
    ending_many: str = ""
    amount: str = ""


def item_phrases(language: str, item: Item) -> ItemPhrases:
    """The phrases of that item: its phrase file, or the shop's own. Raises `NoSuchTemplate`."""
    found = _words_of(language, item)
    shared = phrase_file(language, "phrases")
    return ItemPhrases(
        code=item.code,
        one=found["one"],
        many=found.get("many", found["one"]),
        ahead=found.get("ahead", shared["ahead"]),
        at_limit=found.get("at_limit", shared["at_limit"]),
        last_done=found.get("last_done", shared["last_done"]),
        what=found["what"],
        why=found["why"],
        work=found["work"],
        is_by_axle=found.get("by_axle", False),
        ending_one=found.get("ending_one", ""),
        ending_many=found.get("ending_many", ""),
        amount=found.get("amount", ""),
    )


def _words_of(language: str, item: Item) -> Mapping[str, Any]:
    if item.phrases is None:
        return phrase_file(language, f"items/{item.code}")
    if language not in item.phrases:
        raise NoSuchTemplate(f"The shop's own item {item.code} has no words in {language!r} that somebody looked at.")
    return item.phrases[language]


def item_name(language: str, item: Item, positions: Sequence[str] = (), *, drives_on_right: bool = True) -> str:
    """The item at those positions: "driver's side front tire", "front brake pads", "tires" for all four or none."""
    phrases = item_phrases(language, item)
    words = phrase_file(language, "phrases")["positions"]
    where = [one if drives_on_right else _MIRRORED.get(one, one) for one in positions if one]
    if phrases.is_by_axle:
        where = [_AXLE.get(one, one) for one in where]
    where = sorted(set(where), key=WALKING_ORDER.index)
    if not where or where == list(WALKING_ORDER[:4]) or set(where) == {"front", "rear"}:
        return fill(phrases.many, position="")
    for axle in ("front", "rear"):
        if sorted(where) == [f"{axle}_left", f"{axle}_right"]:
            return fill(phrases.many, position=fill(words[axle], o=phrases.ending_many))
    place = phrase_list([fill(words[one], o=phrases.ending_one) for one in where], language)
    return fill(phrases.one if len(where) == 1 else phrases.many, position=place)


def measured_phrase(language: str, item: Item, value: float | str, unit: str | None = None) -> str:
    """A reading of that item in words: 5 with "32nds" is "5/32", 4.0 with "mm" is "4 mm", "streaks" is what it shows.

    A percentage is "": a text gives none, and the item's line then says only when it was looked at.
    """
    shared = phrase_file(language, "phrases")
    if isinstance(value, str):
        return str(shared["found"].get(value, value.replace("_", " ")))
    units = {**shared["units"], **_words_of(language, item).get("units", {})}
    # Inches and a shop's own units are quoted as they were entered: a tenth is much of them.
    is_exact = unit == "in" or item.phrases is not None
    return fill(units.get(unit, "{value}"), value=f"{round(value, 3):g}" if is_exact else phrase_number(value))


def item_fact(
    language: str,
    item: Item,
    *,
    positions: Sequence[str] = (),
    measured: str = "",
    measured_on: date | None = None,
    done_on: date | None = None,
    due_on: date | None = None,
    is_at_limit: bool = False,
    drives_on_right: bool = True,
    today: date | None = None,
) -> dict[str, str]:
    """One entry of the fact `items`. `measured` comes from `measured_phrase`; `done_on` is the day of the last change
    where nothing was measured; `due_on` is the likely date, of which only the month is said. `today` decides whether a
    day that is over needs its year (None: it has none)."""
    shared, phrases = phrase_file(language, "phrases"), item_phrases(language, item)
    name = item_name(language, item, positions, drives_on_right=drives_on_right)
    when = measured_on or done_on
    said = phrase_past_day(when, today or when, language) if when else ""
    month = phrase_month(due_on, language) if due_on and not is_at_limit else ""
    parts = []
    if measured and when:
        parts.append(fill(shared["measured"], measured=measured, when=said))
    elif when:
        parts.append(fill(shared["checked"] if measured_on else phrases.last_done, when=said))
    if is_at_limit:
        parts.append(phrases.at_limit if measured else phrases.at_limit.removeprefix(shared["at_number"]))
    elif month:
        parts.append(fill(phrases.ahead, month=month))
    heading = name[:1].upper() + name[1:]
    return {
        "name": name,
        "measured": measured if when else "",
        "when": said,
        "month": month,
        "line": f"{heading}: {', '.join(parts)}" if parts else heading,
        "what": phrases.what,
        "why": phrases.why,
        "work": phrases.work,
    }


def service_fact(language: str, item: Item, amount: str = "") -> dict[str, str]:
    """One entry of the fact `services`: a free top-off, and how much of it (none told: up to full)."""
    shared, phrases = phrase_file(language, "phrases"), item_phrases(language, item)
    said = str(shared["amounts"].get(amount, amount)) if amount else phrases.amount or str(shared["up_to_full"])
    return {"name": fill(phrases.one, position=""), "amount": said}


def fill(pattern: str, **words: str) -> str:
    """A phrase with its words in their places; what falls away leaves no second space."""
    for key, value in words.items():
        pattern = pattern.replace("{" + key + "}", value)
    return " ".join(pattern.split())
