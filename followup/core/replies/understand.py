"""Understanding of one reply: text and context go in, one meaning comes out. Pure: the same line, the same answer.

cut reactions -> plain text -> times, offers, reading -> meanings one by one -> combined by rank and context
"""

from __future__ import annotations

from typing import cast

from followup.core.replies import cars, odometer_reading
from followup.core.replies.certainty import how_certain
from followup.core.replies.combining import decide
from followup.core.replies.contract import Language, Question, ReplyIn, ReplyOut
from followup.core.replies.decision import Decision
from followup.core.replies.meaning import in_rank, is_for_a_person
from followup.core.replies.mentions import Setting
from followup.core.replies.offers import pick_offers
from followup.core.replies.opening import opening_hours
from followup.core.replies.plain import Plain, make_plain
from followup.core.replies.reactions import cut_reaction
from followup.core.replies.said import Said
from followup.core.replies.side_times import without_side_times
from followup.core.replies.situation import Situation, standing
from followup.core.replies.times import read_times
from followup.core.replies.windows import iso

REACTION_CERTAINTY = 0.6
"""The most that a thumbs up is worth."""


def understand(reply: ReplyIn) -> ReplyOut:
    """What a reply means. Never fails on any text; what cannot be told is `unclear`."""
    reaction = cut_reaction(reply.text)
    if reaction.approves is not None and not reaction.rest.strip():
        return _reaction(reply, reaction.approves)
    plain = make_plain(reaction.rest, reply.language)
    if not plain.text:
        return _unclear(reply, 0.9)
    now = read_situation(reply, plain)
    return _out(now, decide(now))


def read_situation(reply: ReplyIn, plain: Plain) -> Situation:
    """All that the text holds, read against what was known when it came."""
    booked = standing(reply)
    asked = "confirm" if reply.asked == "visit" and booked else reply.asked
    setting = Setting(
        now=reply.now,
        order=reply.order,
        language=plain.language or reply.language or "en",
        asked=reply.asked,
        hours=opening_hours(reply.hours, reply.closed_on),
        has_offer=bool(reply.offered),
    )
    has_reading = odometer_reading.find_reading(plain.text, asked) is not None
    timed = odometer_reading.without_reading(plain.text, asked) if has_reading and asked != "odometer" else plain.text
    read, _ = read_times(without_side_times(timed, asked), setting)
    pick = pick_offers(plain.text, read, setting, reply.offered, reply.zone)
    said = Said(
        text=plain.text,
        received=reply.text[:400],
        asked=asked,
        has_booking=booked is not None,
        offers=len(reply.offered),
        picked=len(pick.named),
        has_times=any(not choice.is_negated for choice in read.choices),
        is_any=read.is_any,
        has_avoid=any(choice.is_negated for choice in read.choices),
        has_later=bool(read.later),
        has_reading=has_reading,
        has_car=asked == "car" and (cars.find_car(plain.text, reply.cars, True) != (None, False)),
        language=setting.language,
    )
    return Situation(reply, plain, setting, read, pick, said, booked)


def _out(now: Situation, made: Decision) -> ReplyOut:
    codes = in_rank(made.codes)
    return ReplyOut(
        meanings=codes,
        times=made.times,
        avoid=made.avoid,
        chosen=iso(made.chosen) if made.chosen else None,
        until=made.until.isoformat() if made.until else None,
        odometer=made.odometer,
        car=made.car,
        needs=made.needs,
        certainty=how_certain(now, made),
        question=cast("Question | None", made.question),
        handoff=is_for_a_person(codes),
        language=cast("Language | None", now.plain.language),
    )


def _reaction(reply: ReplyIn, approves: bool) -> ReplyOut:
    is_about_booking = reply.asked == "confirm" or (reply.asked == "visit" and standing(reply) is not None)
    if approves and is_about_booking:
        return ReplyOut(meanings=("accept",), certainty=REACTION_CERTAINTY, handoff=False, language=reply.language)
    return _unclear(reply, REACTION_CERTAINTY)


def _unclear(reply: ReplyIn, certainty: float) -> ReplyOut:
    return ReplyOut(meanings=("unclear",), certainty=certainty, handoff=True, language=reply.language)
