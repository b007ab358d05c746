"""Keep an invite short enough for a phone: what does not fit is not said, and belongs in the visit all the same."""

from __future__ import annotations

from typing import Any

from followup.core.segments import segments
from followup.core.wording_checks.length import MOST_SEGMENTS
from followup.core.wording_facts import Facts
from followup.storage.rows import Row
from followup.wording import render


def short_enough(row: Row, facts: Facts, source: str | None) -> str:
    """The rendered text; an invite that is too long for a phone names its last items no more."""
    text = render(row["reason"], row["language"], facts, source)
    while row["kind"] == "invite" and _is_long(text, row["kind"]) and len(items := _listed(facts)) > 1:
        facts = {**facts, "items": items[:-1]}
        text = render(row["reason"], row["language"], facts, source)
    return text


def _is_long(text: str, kind: str) -> bool:
    cut = segments(text)
    return cut.count > MOST_SEGMENTS[cut.encoding][kind]


def _listed(facts: Facts) -> list[Any]:
    items = facts.get("items")
    return items if isinstance(items, list) else []
