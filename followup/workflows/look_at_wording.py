"""Look at what texts say: every reason with the wording that counts, versions of one, and how it reads on a phone.

A preview renders with sample facts, or with those of a text that really was planned or sent to a customer: the caller
hands in how facts are made (`send_texts` knows), so that a preview says exactly what would leave. Reads only.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from followup.core.segments import segments
from followup.core.shop import Shop
from followup.core.text import REASONS, Reason
from followup.core.wording_checks import Fault, check_wording
from followup.core.wording_facts import ATTRIBUTES, FACTS, FACTS_OF, Facts, WrongFacts, names_of, sample_facts
from followup.storage import outbox, people, shops, staff, wordings
from followup.storage.rows import Row
from followup.storage.store import Connection, Store
from followup.wording import LANGUAGES, CannotRender, render, review, shipped

MakeFacts = Callable[[Connection, Shop, Row, datetime], Facts]
MOST_EXAMPLES = 40
NOT_TO_BE_WORDED = ("from_a_person",)


@dataclass(frozen=True)
class Version:
    """One own version; it counts once somebody else looked at it, until it is ended."""

    id: int
    number: int
    source: str
    author_id: int
    author: str
    written_at: datetime
    looked_at: datetime | None
    looked_at_by: str | None
    ended_at: datetime | None


@dataclass(frozen=True)
class ReasonSeen:
    """A reason with its present text by language; `is_own` and `waits` name languages."""

    reason: Reason
    is_own: tuple[str, ...]
    waits: tuple[str, ...]


@dataclass(frozen=True)
class Example:
    """A text of that reason that was planned or sent: for a preview on a real car."""

    text_id: int
    words: str


@dataclass(frozen=True)
class FactSeen:
    """A fact that the text may name; `is_needed` where it is always there."""

    name: str
    words: str
    is_needed: bool


@dataclass(frozen=True)
class WordingSeen:
    """All about one reason in one language. `in_use` None: the shipped text counts."""

    reason: Reason
    language: str
    shipped: str
    in_use: Version | None
    versions: tuple[Version, ...]
    facts: tuple[FactSeen, ...]
    attributes: tuple[str, ...]
    examples: tuple[Example, ...]


@dataclass(frozen=True)
class Preview:
    """How a wording reads: the text, how many segments it is sent in, and all faults; `text` "" where it cannot be
    rendered. `about` says whose facts these are."""

    text: str
    count: int
    encoding: str
    faults: tuple[Fault, ...]
    about: str


def look_at_wordings(store: Store, shop_id: int) -> list[ReasonSeen]:
    """Every reason that can be worded, in the order of `core/text.py`."""
    with store.read() as connection:
        rows = wordings.of_shop(connection, shop_id)
    standing = [row for row in rows if row["ended_at"] is None]
    found = []
    for reason in (one for one in REASONS if one.code not in NOT_TO_BE_WORDED):
        mine = [row for row in standing if row["reason"] == reason.code]
        own = tuple(one for one in LANGUAGES if any(row["language"] == one and row["looked_at"] for row in mine))
        waits = tuple(one for one in LANGUAGES if any(row["language"] == one and not row["looked_at"] for row in mine))
        found.append(ReasonSeen(reason, own, waits))
    return found


def look_at_wording(store: Store, shop_id: int, code: str, language: str) -> WordingSeen | None:
    """One reason in one language; None where there is no such text."""
    about = next((one for one in REASONS if one.code == code and code not in NOT_TO_BE_WORDED), None)
    if about is None or language not in LANGUAGES:
        return None
    with store.read() as connection:
        rows = wordings.versions(connection, shop_id, code, language)
        names = {one.id: one.name for one in staff.of_shop(connection, shop_id)}
        examples = tuple(_examples(connection, shop_id, code, language))
    seen = tuple(_version(row, names) for row in rows)
    in_use = next((one for one in seen if one.looked_at and not one.ended_at), None)
    needed = FACTS_OF[code].needs
    facts = tuple(FactSeen(name, FACTS[name].words, name in (*needs_everywhere(), *needed)) for name in names_of(code))
    has_entries = any(name in ("items", "services") for name in names_of(code))
    attributes = tuple(sorted(ATTRIBUTES)) if has_entries else ()
    return WordingSeen(about, language, shipped(language, code).strip(), in_use, seen, facts, attributes, examples)


def needs_everywhere() -> tuple[str, ...]:
    """Facts that every text has."""
    return ("shop", "shop_phone")


def preview(
    store: Store, shop_id: int, code: str, language: str, source: str, now: datetime, make_facts: MakeFacts,
    text_id: int | None = None, own_domain: str = "",
) -> Preview:  # fmt: skip
    """How `source` reads with the facts of that text, or with sample facts; with all its faults at once."""
    facts, about = sample_facts(code, language), "a sample customer"
    if text_id is not None:
        with store.read() as connection:
            row = outbox.load_text(connection, text_id)
            if row is not None and row["shop_id"] == shop_id and row["reason"] == code:
                shop = shops.load_shop(connection, shop_id)
                facts = make_facts(connection, shop, {**row, "language": language}, now)
                about = _whose(connection, row)
    found = list(review(source, code, language, own_domain=own_domain))
    try:
        text = render(code, language, facts, source)
    except (CannotRender, WrongFacts) as cannot:
        fault = Fault("facts", str(cannot))
        return Preview("", 0, "", tuple(found or [fault]), about)
    found += [one for one in check_wording(text, code, language, facts, own_domain=own_domain) if one not in found]
    cut = segments(text)
    return Preview(text, cut.count, cut.encoding, tuple(dict.fromkeys(found)), about)


def _examples(connection: Connection, shop_id: int, code: str, language: str) -> Sequence[Example]:
    """The newest texts of that reason, one a phone and car; those in the same language first."""
    rows = wordings.texts_of_reason(connection, shop_id, code, MOST_EXAMPLES)
    rows.sort(key=lambda row: row["language"] != language)
    found: dict[Any, Example] = {}
    for row in rows:
        found.setdefault((row["phone_id"], row["vehicle_id"]), Example(row["id"], _whose(connection, row)))
    return list(found.values())


def _whose(connection: Connection, row: Row) -> str:
    persons = people.persons_of_phone(connection, row["phone_id"]) if row["phone_id"] else []
    names = " and ".join(one["name"] for one in persons if one["name"]) or "a customer without a name"
    vehicle = people.load_vehicle(connection, row["shop_id"], row["vehicle_id"]) if row["vehicle_id"] else None
    label = people.vehicle_of(vehicle).label if vehicle else None
    return f"{names}, {label}" if label else names


def _version(row: Row, names: dict[int, str]) -> Version:
    return Version(
        row["id"], row["version"], row["source"], row["author_id"], names.get(row["author_id"], "somebody who left"),
        row["written_at"], row["looked_at"], names.get(row["looked_at_by"]) if row["looked_at_by"] else None,
        row["ended_at"],
    )  # fmt: skip
