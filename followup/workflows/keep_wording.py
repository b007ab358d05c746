"""Keep the shop's own wording: checked as a whole, then looked at by a second person before its first use.

1. `keep_wording`: all checks (syntax, length, grade, what no text says, what every text says) on sample facts, all
   faults at once; only a wording without one that holds it back is kept, as a version with its author.
2. `approve_wording`: somebody else than the author looked at it; checked again, since the checks may have grown. Two at
   once: the store takes the first.
3. `end_wording`: a version goes out of use; the one before it, or the shipped text, counts again. A trial of it ends.
Each stands in the audit trail, in the same transaction.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import datetime

from followup.core.text import REASON_BY_CODE
from followup.core.wording_checks import Fault, stopping
from followup.storage import shops, trials, wordings
from followup.storage.store import Store
from followup.wording import LANGUAGES, review, shipped

# What a person writes goes to one customer and is no template.
NOT_TO_BE_WORDED = ("from_a_person",)
NOT_THE_AUTHOR = "Somebody else must look at it: not its author, and only once."
GONE = "This version was ended in the meantime."


@dataclass(frozen=True)
class Kept:
    """The new version's number, or None with the faults that held it back; hints stand beside a kept version too."""

    version: int | None
    faults: Sequence[Fault] = field(default_factory=tuple)


def keep_wording(
    store: Store, shop_id: int, reason: str, language: str, source: str, author_id: int, author: str, now: datetime,
    own_domain: str = "",
) -> Kept:  # fmt: skip
    """Keep a version that waits for a second look. `LookupError` where there is no such reason or language."""
    may_be_worded(reason, language)
    source = source.strip()
    if not source:
        return Kept(None, (Fault("empty", "Write what the text should say."),))
    faults = review(source, reason, language, own_domain=own_domain)
    if stopping(faults):
        return Kept(None, faults)
    if source == shipped(language, reason).strip():
        return Kept(None, (Fault("same", "This is the text that comes with the program: nothing to keep."),))
    with store.write() as connection:
        version = wordings.add_version(connection, shop_id, reason, language, source, author_id, now)
        shops.note(connection, shop_id, now, author, "wrote a wording", f"{reason} {language} {version}", None, source)
    return Kept(version, faults)


def approve_wording(
    store: Store, shop_id: int, wording_id: int, staff_id: int, who: str, now: datetime, own_domain: str = ""
) -> str | None:
    """A second person lets it be used; else why not, in words. `LookupError` where the shop has none of that id."""
    with store.write() as connection:
        row = next((one for one in wordings.of_shop(connection, shop_id) if one["id"] == wording_id), None)
        if row is None:
            raise LookupError(f"There is no wording {wording_id}.")
        if row["ended_at"]:
            return GONE
        faults = stopping(review(row["source"], row["reason"], row["language"], own_domain=own_domain))
        if faults:
            return " ".join(fault.says for fault in faults)
        if not wordings.look_at(connection, shop_id, wording_id, staff_id, now):
            return NOT_THE_AUTHOR
        shops.note(
            connection, shop_id, now, who, "looked at a wording", f"{row['reason']} {row['language']} {row['version']}"
        )
    return None


def end_wording(store: Store, shop_id: int, wording_id: int, who: str, now: datetime) -> bool:
    """Take a version out of use; False where none of that id stands."""
    with store.write() as connection:
        done = wordings.end(connection, shop_id, wording_id, now)
        if done:
            for trial in trials.open_trials(connection, shop_id):
                if wording_id in (trial["first_id"], trial["second_id"]):
                    trials.end(connection, shop_id, trial["id"], now, f"{who} took one of its wordings out of use")
            shops.note(connection, shop_id, now, who, "ended a wording", str(wording_id))
    return done


def may_be_worded(reason: str, language: str) -> None:
    """Raises `LookupError` where there is no such reason or language, or where it is a person's own words."""
    if reason not in REASON_BY_CODE or language not in LANGUAGES or reason in NOT_TO_BE_WORDED:
        raise LookupError(f"There is no text {reason} in {language}.")
