"""Look at trials of wordings and at the group without invites: counts, intervals, what may be concluded. Reads only.

The group without invites is held against all others who had agreed to texts about upkeep when it began, whether they
stopped since or not: who leaves out those who stopped measures only those who like the texts.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, time

from followup.core.planning.draw import is_without_invites
from followup.core.planning.wording_trial import Arm, Verdict, interval, verdict
from followup.core.shop import Shop, instant
from followup.core.text import REASON_BY_CODE
from followup.core.wall import day_of
from followup.storage import results, shops, trials, wordings
from followup.storage.rows import Row
from followup.storage.store import Connection, Store

# Fewer customers without invites than this tell nothing, whatever they do.
ENOUGH_WITHOUT = 30


@dataclass(frozen=True)
class TrialSeen:
    """One trial: its wordings as (number, or 0 for the shipped text), what came of each, what may be said."""

    id: int
    reason: str
    language: str
    words: str
    numbers: tuple[int, int]
    arms: tuple[Arm, Arm]
    planned_each: int
    begun_at: datetime
    ended_at: datetime | None
    ended_because: str | None
    verdict: Verdict


@dataclass(frozen=True)
class GroupSeen:
    """Customers without and with invites since `since`: (came, customers) of each; `share` 0: no group is drawn."""

    share: float
    since: date
    without: tuple[int, int]
    with_invites: tuple[int, int]
    verdict: Verdict


def look_at_trials(store: Store, shop_id: int, reason: str | None = None, language: str = "en") -> list[TrialSeen]:
    """Every trial of one text in one language, or of the whole shop, newest first."""
    with store.read() as connection:
        found = trials.of_text(connection, shop_id, reason, language) if reason else trials.of_shop(connection, shop_id)
        numbers = {row["id"]: row["version"] for row in wordings.of_shop(connection, shop_id)}
        return [_seen(connection, one, numbers) for one in found]


def _seen(connection: Connection, trial: Row, numbers: dict[int, int]) -> TrialSeen:
    first, second = trials.arms(connection, trial)
    return TrialSeen(
        trial["id"], trial["reason"], trial["language"], REASON_BY_CODE[trial["reason"]].words,
        (numbers.get(trial["first_id"], 0), numbers.get(trial["second_id"], 0)), (first, second),
        trial["planned_each"], trial["begun_at"], trial["ended_at"], trial["ended_because"],
        verdict(first, second, trial["planned_each"]),
    )  # fmt: skip


def look_at_group(store: Store, shop_id: int, now: datetime) -> GroupSeen:
    """What those did who were drawn to get no invites, beside all others, since the share or the year began."""
    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
        since = _since(connection, shop, now)
        agreed = results.phones_agreed(connection, shop_id, day_of(since, shop.zone))
        came = results.phones_that_came(connection, shop_id, since)
    share, on = shop.rules.without_invites_share, day_of(now, shop.zone)
    without = {one for one in agreed if is_without_invites(share, shop_id, on, one)}
    others = agreed - without
    first, second = Arm(len(without), booked=len(without & came)), Arm(len(others), booked=len(others & came))
    return GroupSeen(
        share, day_of(since, shop.zone), (first.booked, first.customers), (second.booked, second.customers),
        verdict(first, second, ENOUGH_WITHOUT),
    )  # fmt: skip


def _since(connection: Connection, shop: Shop, now: datetime) -> datetime:
    """The beginning of the year, or when the share became what it is, whichever is later."""
    began = instant(date(day_of(now, shop.zone).year, 1, 1), time(0), shop.zone)
    share = shop.rules.without_invites_share
    changed: datetime = began
    for version in shops.versions(connection, shop.id, "rules"):
        if version["body"].get("without_invites_share", 0.0) != share:
            break
        changed = version["at"]
    return max(began, changed)


def rate_in_words(count: int, of: int) -> str:
    """`31 of 95 (between 24 and 43 of 100)`."""
    low, high = interval(count, of)
    return f"{count} of {of}" + (f" (between {low * 100:.0f} and {high * 100:.0f} of 100)" if of else "")


def in_words(found: Verdict, arms: Sequence[int], planned_each: int, what: str, names: tuple[str, str]) -> str:
    """What may be concluded, in a sentence; `what` is what is counted ("booked"), `arms` how many customers each."""
    if not all(arms):
        return "Nothing can be concluded yet: on one side there is nobody."
    low, high = round(found.low * 100), round(found.high * 100)
    between = f"of 100 customers between {_more(low)} and {_more(high)} {what} {names[1]} than {names[0]}"
    if found.is_early:
        smaller = f"{min(arms)} of {planned_each} customers on the smaller side"
        return f"Nothing can be concluded yet ({smaller}): so far {between}."
    if found.better is None:
        return f"No difference can be told: {between}."
    better = names[1] if found.better == "second" else names[0]
    return f"More {what} {better}: {between}."


def _more(count: int) -> str:
    return f"{-count} fewer" if count < 0 else f"{count} more"
