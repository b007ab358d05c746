"""Change who is on duty: a new version of the roster with its author, or the way back to an old one.

1. Everybody named must have an open account; stretches of a day must not overlap, and end after they begin.
2. The version that the author looked at must still be the newest.
3. The new version and a line of the audit trail are one transaction. A roster with gaps is kept: it is shown at once,
   and `followup doctor` fails on it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import asdict, dataclass, field
from datetime import datetime

from followup.core.duty import Roster, Watch
from followup.core.shop import WEEKDAYS, wall_time
from followup.storage import shops, staff
from followup.storage.store import Store

SOMEBODY_ELSE = "Somebody changed the roster in the meantime. Look at it again; what you typed still stands here."
MAY_BE_MANAGER = ("manager", "owner")


@dataclass(frozen=True)
class DutyAnswer:
    """The new version's number, or what is wrong, in words, by weekday, "manager", "owner", "on_call" or ""."""

    version: int | None
    wrong: Mapping[str, str] = field(default_factory=dict)


def change_duty(store: Store, shop_id: int, roster: Roster, based_on: int, author: str, now: datetime) -> DutyAnswer:
    """Keep the roster as a new version."""
    with store.write() as connection:
        roles = {one.id: one.role for one in staff.of_shop(connection, shop_id) if one.is_active}
        if wrong := _check(roster, roles):
            return DutyAnswer(None, wrong)
        newest = shops.newest_version(connection, shop_id, "duty")
        if (newest["version"] if newest else 0) != based_on:
            return DutyAnswer(None, {"": SOMEBODY_ELSE})
        version = shops.save_duty(connection, shop_id, roster, author, now)
        before = newest["body"] if newest else None
        shops.note(
            connection, shop_id, now, author, "changed the duty roster", f"version {version}", before, asdict(roster)
        )
    return DutyAnswer(version)


def bring_duty_back(store: Store, shop_id: int, version: int, based_on: int, author: str, now: datetime) -> DutyAnswer:
    """Make the roster as it was in that version. `LookupError` where there is none of that number."""
    with store.read() as connection:
        kept = next((row for row in shops.versions(connection, shop_id, "duty") if row["version"] == version), None)
    if kept is None:
        raise LookupError(f"There is no version {version}.")
    return change_duty(store, shop_id, shops.roster_of(kept["body"]), based_on, author, now)


def _check(roster: Roster, roles: Mapping[int, str]) -> dict[str, str]:
    wrong = {day: why for day, watches in roster.watches.items() if (why := _check_day(day, watches, roles))}
    for name, who in (("manager", roster.manager), ("owner", roster.owner), ("on_call", roster.on_call)):
        if who is not None and who not in roles:
            wrong[name] = "This account is closed: choose somebody else."
    if roster.manager is not None and roles.get(roster.manager) not in (None, *MAY_BE_MANAGER):
        wrong["manager"] = "Choose somebody with a manager's or owner's account."
    if roster.owner is not None and roles.get(roster.owner) not in (None, "owner"):
        wrong["owner"] = "Choose somebody with an owner's account."
    return wrong


def _check_day(day: str, watches: tuple[Watch, ...], roles: Mapping[int, str]) -> str | None:
    if day not in WEEKDAYS:
        return "There is no such weekday."
    reached = None
    for watch in sorted(watches, key=lambda one: wall_time(one.opens)):
        if wall_time(watch.opens) >= wall_time(watch.closes):
            return "The end must be later than the beginning."
        if reached is not None and wall_time(watch.opens) < reached:
            return "Two stretches overlap: end the first where the second begins."
        reached = wall_time(watch.closes)
        if not watch.told:
            return "Choose who is told first."
        if len(set(watch.told)) != len(watch.told):
            return "Nobody can stand twice in one stretch."
        if any(who not in roles for who in watch.told):
            return "Somebody's account is closed: choose somebody else."
    return None
