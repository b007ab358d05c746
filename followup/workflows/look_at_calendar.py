"""Look at bookings as calendars read them: those of a shop or an advisor, or a customer's one visit. Reads only.

A feed says when which car comes in for what, and how it stands: no name, no number and nothing that a customer wrote,
because calendars are kept by others. Whoever may know more follows its link and signs in.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import UTC, datetime, timedelta

from followup.core.calendar_entry import CalendarEntry, Placed, place
from followup.core.item import Catalogue
from followup.core.items import catalogue_of
from followup.core.phrasing import phrase_phone
from followup.core.shop import Shop
from followup.core.wall import day_of, start_of
from followup.storage import calendars, people, shops
from followup.storage.rows import Row
from followup.storage.seen import car_words
from followup.storage.store import Connection, Store
from followup.wording.shipped import phrase_file

# What is over stays in the feed for so long.
KEPT_FOR = timedelta(days=60)
# How staff read a state, before the car; a booking that stands needs no word.
STATE_WORDS = {
    "asked": "Asked", "offered": "Offered", "confirmed": "", "kept": "Came", "missed": "Missed", "closed": "Called off",
}  # fmt: skip


def look_at_feed(store: Store, token: str, base_url: str, now: datetime) -> bytes | None:
    """The file of the feed at that secret address; None where none stands."""
    with store.read() as connection:
        feed = calendars.standing_feed(connection, calendars.hash_of(token))
        if feed is None:
            return None
        shop = shops.load_shop(connection, feed["shop_id"])
        found = calendars.requests_since(connection, shop.id, now - KEPT_FOR, feed["advisor_id"])
        rows, catalogue = {row["id"]: row for row in found}, catalogue_of(shop)
        placed = place(calendars.bookings_of(connection, found, shop), _domain(base_url))
        entries = [
            _for_staff(connection, shop, catalogue, rows[one.booking.id], one, base_url)
            for one in placed
            if one.booking.id in rows
        ]
    return _file(f"{shop.name}: {feed['name']}", entries)


def look_at_visit(store: Store, code: str, base_url: str, now: datetime) -> bytes | None:
    """The file of one visit, for its customer; None where there is none of that code, or its day is over."""
    with store.read() as connection:
        link = calendars.find_link(connection, code)
        if link is None:
            return None
        shop = shops.load_shop(connection, link["shop_id"])
        found = calendars.requests_of_visit(connection, link["request_id"])
        placed = list(place(calendars.bookings_of(connection, found, shop), _domain(base_url)))
        row = found[-1] if found else None
        mine = next((one for one in placed if row and one.booking.id == row["id"]), None)
        if row is None or mine is None or _is_over(mine, shop, now):
            return None
        entry = _for_customer(connection, shop, row, mine)
    return _file(shop.name, [entry])


def _file(name: str, entries: Iterable[CalendarEntry]) -> bytes:
    # Its library takes a tenth of a second to import, which no start of the pages has to wait for.
    from followup.wording.calendar_file import calendar_file

    return calendar_file(name, entries)


def _is_over(placed: Placed, shop: Shop, now: datetime) -> bool:
    """Its day at the shop has ended; from then on the address tells nobody anything."""
    day = day_of(placed.at, shop.zone) if isinstance(placed.at, datetime) else placed.at
    return now >= start_of(day + timedelta(days=1), shop.zone).astimezone(UTC)


def _domain(base_url: str) -> str:
    return base_url.partition("://")[2].partition("/")[0].partition(":")[0] or "localhost"


def _for_staff(
    connection: Connection, shop: Shop, catalogue: Catalogue, row: Row, placed: Placed, base_url: str
) -> CalendarEntry:
    vehicle = people.load_vehicle(connection, shop.id, row["vehicle_id"])
    work = ", ".join(dict.fromkeys(catalogue[item].words for item, _ in row["items"] if item in catalogue))
    state = STATE_WORDS[row["state"]]
    car = car_words(vehicle) if vehicle else "a car"
    title = f"{f'{state}: ' if state else ''}{car}{f' ({work})' if work else ''}"
    address = f"{base_url}/advisor/requests/{row['id']}"
    lasts = shop.rules.check_in_minutes
    return CalendarEntry(placed, title, "\n".join(_lines(row, placed)), lasts, shop.address, address)


def _lines(row: Row, placed: Placed) -> Iterable[str]:
    offered = f", time {placed.number} of {len(row['offered'])}" if row["state"] == "offered" else ""
    yield f"State: {row['state']}{offered}"
    hours = ", ".join(f"{skill} {hours:g} h" for skill, hours in sorted(row["hours"].items()))
    if hours:
        yield f"Labor: {hours}"
    if row["needs"]:
        yield "Asked for: " + ", ".join(need.replace("_", " ") for need in row["needs"])
    yield f"Parts: {row['parts'].replace('_', ' ')}"


def _for_customer(connection: Connection, shop: Shop, row: Row, placed: Placed) -> CalendarEntry:
    phone = people.load_phone(connection, shop.id, row["phone_id"]) if row["phone_id"] else None
    phrases = phrase_file((phone["language"] if phone else None) or "en", "phrases")
    vehicle = people.load_vehicle(connection, shop.id, row["vehicle_id"])
    label = people.vehicle_of(vehicle).label if vehicle else None
    said = {"{shop}": shop.name, "{phone}": phrase_phone(shop.phone), "{car}": label or phrases["car"]}
    title, says = (_filled(phrases["visit_entry"][one], said) for one in ("title", "says"))
    return CalendarEntry(placed, title, says, shop.rules.check_in_minutes, shop.address)


def _filled(pattern: str, said: dict[str, str]) -> str:
    """What a name holds is not looked through again: it may be called `{phone}`."""
    parts = pattern.replace("{", "\0{").replace("}", "}\0").split("\0")
    return "".join(said.get(part, part) for part in parts)
