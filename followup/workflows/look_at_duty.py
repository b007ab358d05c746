"""Look at who is on duty: the roster that stands, its gaps in the next two weeks, its versions. Reads only."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime

from followup.core.duty import Gap, Roster, gaps
from followup.core.shop import Shop
from followup.core.wall import day_of
from followup.storage import shops, staff
from followup.storage.staff import StaffMember
from followup.storage.store import Store


@dataclass(frozen=True)
class DutyVersion:
    """One version of the roster."""

    number: int
    author: str
    at: datetime
    roster: Roster


@dataclass(frozen=True)
class Duty:
    """`members` may be told now; `silent` of them have no number for alerts: they see an alert on the pages only.
    `names` has everybody, also those who have left. `left` are people in the roster whose account is closed."""

    shop: Shop
    version: int
    roster: Roster
    members: tuple[StaffMember, ...]
    silent: frozenset[int]
    names: dict[int, str]
    left: tuple[str, ...]
    gaps: tuple[Gap, ...]
    versions: tuple[DutyVersion, ...]


def look_at_duty(store: Store, shop_id: int, now: datetime) -> Duty:
    """The roster with everything that is worth knowing about it."""
    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
        everybody = staff.of_shop(connection, shop_id)
        rows = shops.versions(connection, shop_id, "duty")
        roster = shops.load_roster(connection, shop_id)
        silent = {one.id for one in everybody if staff.alert_phone(connection, shop_id, one.id) is None}
    active = tuple(one for one in everybody if one.is_active)
    names = {one.id: one.name for one in everybody}
    closed = {one.id for one in everybody if not one.is_active}
    return Duty(
        shop=shop,
        version=rows[0]["version"] if rows else 0,
        roster=roster,
        members=active,
        silent=frozenset(silent),
        names=names,
        left=tuple(names[one] for one in sorted(_told(roster) & closed)),
        gaps=tuple(gaps(_without(roster, closed), shop, day_of(now, shop.zone))),
        versions=tuple(
            DutyVersion(row["version"], row["author"], row["at"], shops.roster_of(row["body"])) for row in rows
        ),
    )


def _told(roster: Roster) -> set[int]:
    """Everybody whom the roster names."""
    named = {one for watches in roster.watches.values() for watch in watches for one in watch.told}
    return named | {one for one in (roster.manager, roster.owner, roster.on_call) if one is not None}


def _without(roster: Roster, gone: set[int]) -> Roster:
    """The roster without those who have left: an hour that only they watch is a gap."""
    watches = {
        day: tuple(replace(one, told=tuple(who for who in one.told if who not in gone)) for one in kept)
        for day, kept in roster.watches.items()
    }
    return replace(roster, watches=watches)
