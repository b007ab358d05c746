"""Keep a text short enough for a phone: what stands in it first, and what is left out of it."""

from __future__ import annotations

from typing import Any

from followup.core.item import Item
from followup.core.segments import segments
from followup.core.wording_checks.length import MOST_SEGMENTS
from followup.core.wording_facts import Facts
from followup.storage.rows import Row
from followup.wording import render

# Items with a line of their own; what else belongs in the visit is named in one more.
MOST_LINES = 3


def weight(item: Item, rows: list[Row]) -> tuple[bool, bool]:
    """What a customer should read first: brakes and tires at their limit, then what else is there, then the rest."""
    return not any(row["body"]["is_past"] for row in rows), not item.is_brakes_or_tires


def short_enough(row: Row, facts: Facts, source: str | None) -> str:
    """The rendered text; an invite that is too long for a phone names its last items no more, a text about a visit
    does without its link, and a fleet's list says how many units it has no room for."""
    text = render(row["reason"], row["language"], facts, source)
    if facts.get("link") and _is_long(text, row["kind"]):
        facts = {**facts, "link": ""}
        text = render(row["reason"], row["language"], facts, source)
    while row["kind"] == "invite" and _is_long(text, row["kind"]) and len(items := _listed(facts)) > 1:
        facts = {**facts, "items": items[:-1]}
        text = render(row["reason"], row["language"], facts, source)
    while _is_long(text, row["kind"]) and isinstance(units := facts.get("units"), list) and len(units) > 1:
        facts = {**facts, "units": units[:-1], "more_units": int(str(facts["more_units"])) + 1}
        text = render(row["reason"], row["language"], facts, source)
    return text


def _is_long(text: str, kind: str) -> bool:
    cut = segments(text)
    return cut.count > MOST_SEGMENTS[cut.encoding][kind]


def _listed(facts: Facts) -> list[Any]:
    items = facts.get("items")
    return items if isinstance(items, list) else []
