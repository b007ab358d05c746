"""Ask once more, in the transaction that lets a text leave: is it still wanted, and may it leave now?

Between planning and sending a customer may have written STOP, a visit may have been opened, a booking made by phone.
Whether the number may be texted is `core/planning/number_rules.py`, as on the page and in `followup may-text`.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from typing import Literal

from followup.core.planning.number_rules import PASSES, About, about_reason, by_a_person, may_text
from followup.core.planning.picture import NumberPicture
from followup.core.shop import Shop
from followup.core.text import WEEKLY
from followup.storage import alerts, inspections, lead_times, numbers, pictures, requests
from followup.storage.rows import Row
from followup.storage.store import Connection
from followup.workflows.send_texts.fleet_units import units_left
from followup.workflows.send_texts.sight import Sight

_ABOUT_A_BOOKING = ("offer_times", "confirmation", "reminder", "parts_in", "booking_closed")
_SOON_OR_NEVER = ("stopped", "resumed", "opted_in", "ask_confirm_stop")
# While we wait for the answer to "shall we stop?" it is asked again so often.
ASK_AGAIN_AFTER = timedelta(minutes=5)


@dataclass(frozen=True)
class Verdict:
    """`send` it, `later` at `at`, or `drop` it `because`. `lands_by`: until when it may still reach the phone.

    `is_for_a_call`: somebody waits for what it says, so a person calls.
    """

    what: Literal["send", "later", "drop"]
    because: str = ""
    at: datetime | None = None
    lands_by: datetime | None = None
    is_for_a_call: bool = False


def ask_once_more(
    connection: Connection, shop: Shop, text: Row, sight: Sight, now: datetime, *, needs_registration: bool
) -> Verdict:
    """Decide on one claimed text by what was read of it in this transaction."""
    if text["valid_until"] is not None and now >= text["valid_until"]:
        anew = "" if text["kind"] == "answer" else ": it is planned anew if it is still due"
        return Verdict("drop", f"its time is over{anew}", is_for_a_call=_is_waited_for(text))
    if now < text["due_at"]:
        # The clock was moved back since the text was claimed.
        return Verdict("later", at=text["due_at"])
    if text["kind"] == "alert":
        return _alert(connection, shop, text)
    because = _gone_booking(connection, shop, text)
    if because:
        return Verdict("drop", because)
    if text["reason"] in WEEKLY and not units_left(connection, text):
        return Verdict("drop", "each unit of the list is booked or in the shop by now")
    verdict = _of_number(connection, shop, text, sight, now, needs_registration)
    if verdict.what == "send" and _is_about_one_car(text) and sight.gathered is not None:
        why = sight.reasons.get(text["reason_id"])
        as_planned = lead_times.with_learned_lead(connection, shop, now)
        unwanted = pictures.why_not_any_more(sight.gathered, as_planned, text, why, now)
        return Verdict("drop", unwanted) if unwanted else verdict
    return verdict


def _is_about_one_car(text: Row) -> bool:
    return text["kind"] == "invite" and text["reason"] not in WEEKLY


def _of_number(
    connection: Connection, shop: Shop, text: Row, sight: Sight, now: datetime, needs_registration: bool
) -> Verdict:
    number = numbers.number_picture(
        connection, shop, text["number"], now, needs_registration=needs_registration, text=text, known=sight.known
    )
    found = may_text(_about(connection, shop, text, sight, number), number, now)
    if found.may:
        return Verdict("send", lands_by=found.lands_by)
    first = next((one for one in found.because if one.rule not in PASSES), None)
    if first is None and found.next_at is not None:
        if text["valid_until"] is not None and found.next_at >= text["valid_until"]:
            because = f"its time is over before it may leave: {found.because[0].says}"
            return Verdict("drop", because, is_for_a_call=_is_waited_for(text))
        return Verdict("later", at=found.next_at)
    if first is not None and first.rule == "confirm_stop":
        return Verdict("later", at=now + ASK_AGAIN_AFTER)
    because = first.says if first else "no hour fits every zone in which the phone may be"
    return Verdict("drop", because, is_for_a_call=text["kind"] == "visit")


def _about(connection: Connection, shop: Shop, text: Row, sight: Sight, number: NumberPicture) -> About:
    about = about_reason(text["reason"])
    if about.kind == "invite":
        why = sight.reasons.get(text["reason_id"])
        raised_by = why["raised_by"] if why else ""
        return replace(about, raised_by=raised_by, is_legal=bool(text["facts"].get("is_legal")))
    if about.kind == "visit" and text["author_id"] is not None:
        return by_a_person(number)
    was_asked_for = about.kind == "visit" and _was_asked_by_text(connection, shop, text)
    return replace(about, was_asked_for=was_asked_for)


def _is_waited_for(text: Row) -> bool:
    """Whether it answers somebody, who would hear nothing; what is about a stop or a consent leaves soon or never."""
    return bool(text["kind"] == "answer" and text["reason"] not in _SOON_OR_NEVER)


def _alert(connection: Connection, shop: Shop, text: Row) -> Verdict:
    alert = alerts.load_alert(connection, shop.id, text["alert_id"])
    if alert is None or alert["acknowledged_at"] or alert["closed_at"]:
        return Verdict("drop", "somebody is calling already")
    return Verdict("send")


def _was_asked_by_text(connection: Connection, shop: Shop, text: Row) -> bool:
    request = requests.load_request(connection, shop.id, text["request_id"]) if text["request_id"] else None
    return request is not None and request["came_from"] == "text" and request["phone_id"] == text["phone_id"]


def _gone_booking(connection: Connection, shop: Shop, text: Row) -> str | None:
    if text["reason"] not in _ABOUT_A_BOOKING or text["request_id"] is None:
        return None
    request = requests.load_request(connection, shop.id, text["request_id"])
    wanted = {"offer_times": ("offered",), "booking_closed": ("closed",), "parts_in": ("asked", "offered", "confirmed")}
    if request is None or request["state"] not in wanted.get(text["reason"], ("confirmed",)):
        return "the booking has changed since"
    if text["reason"] == "reminder" and inspections.is_in_shop(connection, request["vehicle_id"]):
        return "the car is in the shop"
    told = text["facts"].get("time")
    slot = request["slot_at"].isoformat() if request["slot_at"] else None
    if text["reason"] in ("confirmation", "reminder") and told and told != slot:
        return "the booking was moved since"
    return None
