"""Texts to customers: the three kinds, every reason for one with the consent it needs, and the states of a text."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta
from typing import Literal

Kind = Literal["invite", "visit", "answer"]
Cover = Literal["visits", "upkeep", "offers"]
COVERS: tuple[Cover, ...] = ("visits", "upkeep", "offers")

TEXT_STATES = ("planned", "claimed", "in_flight", "sent", "failed", "unknown", "held", "dropped")
# Where each state may go. `held -> planned` only by a person's click; `unknown -> planned` only by the very process
# that had the text and knows that no byte left; `dropped -> sent` where a report came of what a person had let be;
# `sent -> unknown` where the id that a list had shown turned out to be another text's.
TEXT_MOVES: dict[str, tuple[str, ...]] = {
    "planned": ("claimed", "dropped", "failed", "sent"),
    "claimed": ("in_flight", "planned", "dropped", "failed", "sent"),
    "in_flight": ("sent", "failed", "unknown", "planned"),
    "unknown": ("sent", "held", "planned"),
    "held": ("planned", "dropped", "sent"),
    "sent": ("unknown",),
    "failed": (),
    "dropped": ("planned", "sent"),
}
# Delivery reports arrive in any order: a report counts only if its rank is higher than the one kept. No two ends have
# the same rank, so that two that contradict each other end alike in any order: what tells of arrival counts more.
DELIVERY_RANK = {
    "accepted": 1, "scheduled": 1, "queued": 2, "sending": 3, "sent": 4, "partially_delivered": 5,
    "canceled": 6, "failed": 7, "undelivered": 8, "delivered": 9, "read": 10,
}  # fmt: skip

VALID_FOR: dict[str, timedelta] = {"invite": timedelta(days=3), "answer": timedelta(minutes=30)}
# An answer to what was written longer ago answers nobody who is waiting: it keeps to the hours of texts about visits.
ANSWERS_WITHIN = timedelta(minutes=30)
CONFIRMED_WITHIN = timedelta(minutes=5)  # of a stop: 47 CFR 64.1200(a)(12); of a consent the same
# An answer that leaves although a stop stands: HELP, the one confirmation, and what asks about or undoes the stop.
LEAVES_IN_SPITE_OF_A_STOP = frozenset({"help", "stopped", "resumed", "ask_confirm_stop"})


@dataclass(frozen=True)
class Reason:
    """Why a text leaves. The wording is `message_templates/<language>/<code>.txt`.

    `cover` is the consent it needs (None: only an opt-out stops it, for answers); `asks` is what the reply contract
    calls `asked` once it was sent; `needs_phone_number` where the shop's number must stand in the text.
    `offers_way_out` where the text must say how to stop.
    """

    code: str
    kind: Kind
    words: str
    cover: Cover | None = None
    asks: str | None = None
    needs_phone_number: bool = False
    offers_way_out: bool = False
    is_about_brakes_or_tires: bool = False


def _invite(code: str, words: str, cover: Cover, asks: str, phone: bool = False) -> Reason:
    return Reason(code, "invite", words, cover, asks, needs_phone_number=phone, offers_way_out=True)


def _visit(code: str, words: str, asks: str | None = None, phone: bool = False) -> Reason:
    return Reason(code, "visit", words, "visits", asks, needs_phone_number=phone)


def _answer(code: str, words: str, asks: str | None = None, phone: bool = False) -> Reason:
    return Reason(code, "answer", words, None, asks, needs_phone_number=phone)


REASONS: tuple[Reason, ...] = (
    _invite("due_work", "work that is coming due", "upkeep", "visit", phone=True),
    _invite("free_service", "a free top-off: just come by", "offers", "walk_in"),
    _invite("winter_battery", "a look at the battery before winter", "upkeep", "visit", phone=True),
    _invite("set_change", "the change to the tires of the season", "upkeep", "visit", phone=True),
    _invite("winter_top_off", "a free top-off before winter: just come by", "offers", "walk_in"),
    _invite("long_unseen", "free services for a car not seen for long: just come by", "offers", "walk_in"),
    _invite("odometer_question", "what the odometer shows", "upkeep", "odometer"),
    _invite("missed_visit", "a booking that was missed", "upkeep", "visit", phone=True),
    _invite("after_visit", "was everything all right", "upkeep", "after_visit", phone=True),
    _invite("recall", "a recall that staff entered", "upkeep", "visit", phone=True),
    # What its contact answers is read by a person: a unit number names no car that a machine could book.
    Reason(
        "fleet_list",
        "invite",
        "the week's list for a fleet, by unit number",
        "upkeep",
        needs_phone_number=True,
        offers_way_out=True,
    ),
    _visit("offer_times", "times that are free", "slot", phone=True),
    _visit("confirmation", "the booking is confirmed", phone=True),
    _visit("reminder", "the booking is tomorrow", "confirm", phone=True),
    _visit("parts_in", "the parts are here", "day", phone=True),
    _visit("car_ready", "the car is ready", phone=True),
    _visit("booking_closed", "the booking was called off", phone=True),
    _visit("from_a_person", "a person's own words"),
    _answer("opted_in", "the one confirmation after opting in", phone=True),
    _answer("stopped", "the one confirmation of a stop"),
    _answer("resumed", "texts are on again"),
    _answer("help", "who this is and how to stop", phone=True),
    _answer("ask_day", "which day suits", "day"),
    _answer("ask_time", "what time suits", "time"),
    _answer("ask_am_or_pm", "morning or afternoon", "time"),
    _answer("ask_slot", "which of the offered times", "slot"),
    _answer("ask_car", "which car", "car"),
    _answer("ask_odometer", "the odometer once more", "odometer"),
    _answer("ask_confirm_stop", "shall we stop texting", "confirm_stop"),
    _answer("ask_again", "it was not understood: please once more", "day"),
    _answer("request_noted", "the time asked for, read back; an advisor confirms it"),
    _answer("change_noted", "the new time asked for, read back; the old one stands until then"),
    _answer("cancel_noted", "the booking is called off"),
    _answer("booking_stands", "the booking stands as it is"),
    _answer("running_late_noted", "the advisor knows that the customer is late"),
    _answer("later_noted", "we ask again later"),
    _answer("decline_noted", "we leave it for now"),
    _answer("done_noted", "it has been done already"),
    _answer("odometer_noted", "the reading was noted"),
    _answer("walk_in_noted", "come by any time we are open"),
    _answer("gone_noted", "the car is no longer theirs"),
    _answer("stranger_noted", "a wrong number"),
    _answer("complaint_noted", "a person calls about it", phone=True),
    _answer("call_noted", "a person calls", phone=True),
    _answer("a_person_reads", "a person reads this", phone=True),
    _answer("price", "what it costs: a person gives the price", phone=True),
    _answer("duration", "how long it takes"),
    _answer("explain", "what it is and why it matters"),
    _answer("where", "where the shop is and when it is open", phone=True),
    _answer("judgment", "what was measured; we cannot judge it by text", phone=True),
    _answer("caution_now_open", "stop-now caution while the shop is open", phone=True),
    _answer("caution_now_closed", "stop-now caution while it is closed", phone=True),
    _answer("caution_today_open", "today caution while the shop is open", phone=True),
    _answer("caution_today_closed", "today caution while it is closed", phone=True),
    _answer("caution_run_flat", "a flat on a run-flat car", phone=True),
)

# Agreed to in writing as so many a week: outside the spacing, the tries and the caps of invites, and the only one of
# them that a fleet's contact gets.
WEEKLY = frozenset({"fleet_list"})
# What is written at any hour however late: cautions, and what has minutes of its own.
AT_ANY_HOUR = frozenset(
    {one.code for one in REASONS if one.code.startswith("caution_")} | {"opted_in", "stopped", "ask_confirm_stop"}
)
REASON_BY_CODE: dict[str, Reason] = {reason.code: reason for reason in REASONS}


def reason(code: str) -> Reason:
    """The reason of that code; `KeyError` where there is none."""
    return REASON_BY_CODE[code]
