"""Ask once more, in the transaction that lets a text leave: is it still wanted, and may it leave now?

Between planning and sending a customer may have written STOP, a visit may have been opened, a booking made by phone.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Literal

from followup.core.conversation.respond import LEAVES_IN_SPITE_OF_A_STOP
from followup.core.planning.hours import Where, lands_by, may_leave, next_moment
from followup.core.shop import Shop
from followup.core.text import reason
from followup.storage import alerts, consents, inbox, people, pictures, requests
from followup.storage.rows import Row
from followup.storage.store import Connection

# A caution to the phone is not held up by what turns other texts off; only a stop is in its way.
_ABOUT_A_BOOKING = ("offer_times", "confirmation", "reminder", "parts_in", "booking_closed")


@dataclass(frozen=True)
class Verdict:
    """`send` it, `later` at `at`, or `drop` it `because`. `lands_by`: until when it may still reach the phone."""

    what: Literal["send", "later", "drop"]
    because: str = ""
    at: datetime | None = None
    lands_by: datetime | None = None


def ask_once_more(connection: Connection, shop: Shop, text: Row, now: datetime, *, needs_registration: bool) -> Verdict:
    """Decide on one claimed text."""
    if text["valid_until"] is not None and now >= text["valid_until"]:
        return Verdict("drop", "its time is over: it is planned anew if it is still due")
    if needs_registration and text["kind"] != "alert":
        return Verdict("drop", "the sending number is not registered with the carriers")
    if text["kind"] == "alert":
        return _alert(connection, shop, text)
    phone = people.load_phone(connection, shop.id, text["phone_id"])
    if phone is None or phone["bad_because"]:
        return Verdict("drop", "the number cannot be texted")
    because = (
        _switched_off(shop, text)
        or _without_consent(connection, shop, text)
        or _closed_thread(connection, text)
        or _gone_booking(connection, shop, text)
        or _unwanted_invite(connection, shop, text, now)
    )
    if because:
        return Verdict("drop", because)
    return _hours(shop, phone, text, now)


def _alert(connection: Connection, shop: Shop, text: Row) -> Verdict:
    alert = alerts.load_alert(connection, shop.id, text["alert_id"])
    if alert is None or alert["acknowledged_at"] or alert["closed_at"]:
        return Verdict("drop", "somebody is calling already")
    return Verdict("send")


def _switched_off(shop: Shop, text: Row) -> str | None:
    if shop.rules.is_everything_off:
        return "everything is switched off"
    if shop.rules.is_sending_stopped and text["kind"] != "answer":
        return "all sending is stopped"
    return None


def _without_consent(connection: Connection, shop: Shop, text: Row) -> str | None:
    """Answers leave unless a stop stands; other texts need the consent of their reason, or, about a visit, that the
    customer asked for it in this very thread."""
    standing = consents.standing_of(connection, shop.id, text["number"])
    if standing.is_stopped:
        return None if text["reason"] in LEAVES_IN_SPITE_OF_A_STOP else "the customer stopped the texts"
    about = reason(text["reason"])
    if about.kind == "answer" or standing.allows(about.cover):
        return None
    if about.kind == "visit" and _was_asked_by_text(connection, shop, text):
        return None
    return f"there is no consent for {about.cover}"


def _was_asked_by_text(connection: Connection, shop: Shop, text: Row) -> bool:
    if text["author_id"] is not None and text["phone_id"] is not None:
        return inbox.last_inbound_at(connection, text["phone_id"]) is not None
    request = requests.load_request(connection, shop.id, text["request_id"]) if text["request_id"] else None
    return request is not None and request["came_from"] == "text" and request["phone_id"] == text["phone_id"]


def _closed_thread(connection: Connection, text: Row) -> str | None:
    """While a symptom is open or a thread is frozen, only a person's own words and answers leave."""
    if text["kind"] == "answer" or text["author_id"] is not None:
        return None
    state, _ = inbox.conversation_of(connection, text["phone_id"])
    if state.get("open_symptom") or state.get("is_frozen"):
        return "a person has this thread: a symptom or a serious matter is open"
    return None


def _gone_booking(connection: Connection, shop: Shop, text: Row) -> str | None:
    if text["reason"] not in _ABOUT_A_BOOKING or text["request_id"] is None:
        return None
    request = requests.load_request(connection, shop.id, text["request_id"])
    wanted = {"offer_times": ("offered",), "booking_closed": ("closed",), "parts_in": ("asked", "offered", "confirmed")}
    if request is None or request["state"] not in wanted.get(text["reason"], ("confirmed",)):
        return "the booking has changed since"
    told = text["facts"].get("time")
    slot = request["slot_at"].isoformat() if request["slot_at"] else None
    if text["reason"] in ("confirmation", "reminder") and told and told != slot:
        return "the booking was moved since"
    return None


def _unwanted_invite(connection: Connection, shop: Shop, text: Row, now: datetime) -> str | None:
    if text["kind"] != "invite":
        return None
    return pictures.why_not_any_more(connection, shop, text, now)


def _hours(shop: Shop, phone: Row, text: Row, now: datetime) -> Verdict:
    where = Where(tuple(phone["zones"]), None)
    if may_leave(text["kind"], now, shop, where).may:
        return Verdict("send", lands_by=lands_by(text["kind"], now, shop, where))
    at = next_moment(text["kind"], now, shop, where)
    if at is None:
        return Verdict("drop", "no hour fits every zone in which the phone may be")
    if text["valid_until"] is not None and at >= text["valid_until"]:
        return Verdict("drop", "its time is over before it may leave")
    return Verdict("later", at=at)
