"""Look for what keeps a shop from working: open hours without anybody on duty, a clock that stands, texts nobody is
sure of, a number that may not send. It changes nothing."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta

from followup.core.duty import gaps
from followup.core.wall import day_of, to_wall
from followup.storage import alerts, inbox, machine, outcomes, shops
from followup.storage.store import Connection, Store

# Three missed ticks of the slowest that every shop depends on.
UNREAD_FOR = timedelta(minutes=10)
CLOCK_STANDS_AFTER = timedelta(minutes=2)


def look_for_trouble(store: Store, now: datetime, needs_registration: bool) -> list[str]:
    """Every trouble in one sentence with what to do; [] where all is well."""
    with store.read() as connection:
        found = list(_clock(connection, now))
        if letters := inbox.dead_letters(connection, None):
            found.append(f"{len(letters)} came in and fit no shop: look at the owner's page of them.")
        for shop_id, code in shops.shop_codes(connection):
            found += [f"shop {code}: {one}" for one in _shop(connection, shop_id, now, needs_registration)]
    return found


def _clock(connection: Connection, now: datetime) -> Iterator[str]:
    last = machine.last_beats(connection).get("send")
    if last is None:
        yield "The clock never ticked: run `followup work` beside `followup web`."
    elif now - last > CLOCK_STANDS_AFTER:
        yield f"The clock has not ticked since {last:%Y-%m-%d %H:%M} UTC: is `followup work` running?"


def _shop(connection: Connection, shop_id: int, now: datetime, needs_registration: bool) -> Iterator[str]:
    shop = shops.load_shop(connection, shop_id)
    roster = shops.load_roster(connection, shop_id)
    for gap in gaps(roster, shop, day_of(now, shop.zone), days=7)[:3]:
        opens, closes = to_wall(gap.from_at, shop.zone), to_wall(gap.to_at, shop.zone)
        yield f"nobody is on duty on {gap.day} from {opens:%H:%M} to {closes:%H:%M}: fill the duty page."
    if needs_registration:
        yield "texts to US numbers wait: enter brand, campaign, use case and day of the registration in the settings."
    if shop.rules.is_everything_off or shop.rules.is_sending_stopped:
        yield "sending is stopped by the owner's switch."
    heard_at = inbox.heard_at(connection, shop_id)
    if "hear" in machine.last_beats(connection) and (heard_at is None or now - heard_at > inbox.HEARD_WITHIN):
        since = f"since {heard_at:%Y-%m-%d %H:%M} UTC" if heard_at else "yet"
        yield (
            f"the provider's list of what customers wrote could not be read {since}, so invites and texts about visits "
            "wait: look into the log."
        )
    for row in alerts.open_of_kind(connection, shop_id, "texts_refused"):
        since = f"{row['raised_at']:%Y-%m-%d %H:%M} UTC"
        yield f"the provider refuses every text since {since} ({row['says']}): look at the account there."
    waits = [at for at in inbox.unread_by_phone(connection, shop_id).values() if now - at > UNREAD_FOR]
    if waits:
        yield f"{len(waits)} customers wrote and nothing read it yet; no text leaves to them: look into the log."
    held = outcomes.held_texts(connection, shop_id)
    if held:
        yield f"{len(held)} texts may or may not have gone out: decide on the advisor's page."
    if inbox.dead_letters(connection, shop_id):
        yield "there are dead letters to look at."
    late = [row for row in alerts.open_alerts(connection, shop_id) if row["kind"].startswith("symptom")]
    if any(row["acknowledged_at"] is None for row in late):
        yield "a symptom waits for somebody to say that they are calling."
