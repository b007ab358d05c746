"""Begin and end a trial of two wordings of an invite.

1. `begin_trial`: both wordings were looked at and stand, one of them may be the shipped text; one trial a text and
   language at a time (the database's rule). From then on a lot decides which of them a customer reads.
2. `end_trial`: the wording that is to be used from now on is named; newer versions than it go out of use.
Each stands in the audit trail, in the same transaction. A trial also ends where one of its wordings is taken out of use
(`keep_wording.py`) or too many stop (`watch_stops.py`).
"""

from __future__ import annotations

import secrets
from datetime import datetime

from followup.core.planning.wording_trial import LEAST_EACH, MOST_EACH
from followup.core.text import REASON_BY_CODE
from followup.storage import shops, trials, wordings
from followup.storage.rows import Row
from followup.storage.store import Store

SHIPPED = 0
"""What stands for the shipped text where a version's number is asked for."""

ALREADY = "A trial of this text runs already: end it first."
NOT_AN_INVITE = "Only invites are tried: every other text answers somebody."


def begin_trial(
    store: Store, shop_id: int, reason: str, language: str, first: int, second: int, planned_each: int, staff_id: int,
    who: str, now: datetime,
) -> str | None:  # fmt: skip
    """Begin a trial of two versions by their numbers (`SHIPPED`: the text that comes with the program).

    Returns why not, in words; None where it began.
    """
    if REASON_BY_CODE[reason].kind != "invite":
        return NOT_AN_INVITE
    if not LEAST_EACH <= planned_each <= MOST_EACH:
        return f"Between {LEAST_EACH} and {MOST_EACH} customers should read each."
    if first == second:
        return "Choose two different wordings."
    with store.write() as connection:
        found = {row["version"]: row for row in wordings.versions(connection, shop_id, reason, language)}
        for number in (first, second):
            if number != SHIPPED and not _may_be_used(found.get(number)):
                return f"Version {number} is not in use: somebody else has to look at it first."
        trial_id = trials.begin(
            connection, shop_id, reason=reason, language=language, draw_key=secrets.token_hex(8),
            first_id=_id_of(found, first), second_id=_id_of(found, second), planned_each=planned_each, begun_at=now,
            begun_by=staff_id,
        )  # fmt: skip
        if trial_id is None:
            return ALREADY
        shops.note(
            connection, shop_id, now, who, "began a trial of wordings", f"{reason} {language}", None,
            {"first": first, "second": second, "planned_each": planned_each},
        )  # fmt: skip
    return None


def end_trial(store: Store, shop_id: int, trial_id: int, use: str, who: str, now: datetime) -> bool:
    """End a trial and use its `first` or `second` wording from now on; False where it is no trial that runs."""
    with store.write() as connection:
        trial = next((one for one in trials.open_trials(connection, shop_id) if one["id"] == trial_id), None)
        if trial is None:
            return False
        trials.end(connection, shop_id, trial_id, now, f"{who} ended it: the {use} wording is used")
        wordings.use(connection, trial, trial[f"{use}_id"], now)
        shops.note(connection, shop_id, now, who, "ended a trial of wordings", str(trial_id), None, use)
    return True


def _may_be_used(row: Row | None) -> bool:
    return bool(row and row["looked_at"] and not row["ended_at"])


def _id_of(found: dict[int, Row], number: int) -> int | None:
    return None if number == SHIPPED else int(found[number]["id"])
