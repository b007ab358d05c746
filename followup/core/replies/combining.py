"""What the meanings of one text make together: by rank, by what was asked, by the booking and the offers that stand."""

from __future__ import annotations

import re
from dataclasses import replace

from followup.core.replies import booking_replies, cars, limits, odometer_reading, symptoms, until, visit_times
from followup.core.replies.after_visit import settle_after_visit
from followup.core.replies.asides import ASIDES, kept_apart
from followup.core.replies.consent_replies import ABOUT_SERVICE, settle_consent
from followup.core.replies.contract import OdometerReading
from followup.core.replies.decision import Decision
from followup.core.replies.guessing import second_thoughts
from followup.core.replies.intents import ALL, accept, decline, done, explain, unclear
from followup.core.replies.intents import help as help_asked
from followup.core.replies.needs import find_needs
from followup.core.replies.other_questions import asks_for_booking, asks_something_else
from followup.core.replies.said import Said, phrases
from followup.core.replies.situation import Situation
from followup.core.replies.windows import point
from followup.core.replies.yes_words import has_yes_word

_OVER_WITH = frozenset({"stop", "stranger", "gone", "done"})


def decide(now: Situation) -> Decision:
    """The one result: meanings, times, and what to ask back."""
    codes = {intent.CODE for intent in ALL if intent.holds(now.said)}
    if "stop" not in codes and _is_for_nobody(now):
        return Decision({"unclear"})
    made = _combine(now, set(codes))
    second = kept_apart(now, codes, second_thoughts(now, made))
    if not second.added and not second.dropped:
        return made
    other = _combine(now, (codes | second.added) - second.dropped, second.dropped)
    other.doubts.append("guessed")
    return other


def _combine(now: Situation, codes: set[str], without: frozenset[str] = frozenset()) -> Decision:
    """What these meanings make together, against the times, the offers and what was asked; `without` stays out."""
    made = Decision(codes, without=without)
    visit_times.resolve_times(now, made)
    made.needs = find_needs(now.text)
    settle_consent(now, made)
    _settle_asides(now, made)
    _settle_yes_and_no(now, made)
    _prefer_reading(now, made)
    until.settle_later(now, made)
    _settle_yes_and_later(now, made)
    _settle_offers(now, made)
    booking_replies.settle_booking(now, made)
    _settle_asked(now, made)
    _settle_reading(now, made)
    _settle_over(now, made)
    _settle_rest(now, made)
    _settle_question(now, made)
    return made


def _is_for_nobody(now: Situation) -> bool:
    """Whether a machine wrote it, or it is an advertisement, or in a language that is not read here."""
    said = now.said
    return unclear.is_automatic(said) or unclear.is_spam(said) or unclear.is_other_tongue(said)


def _settle_asides(now: Situation, made: Decision) -> None:
    if "symptom" in made.codes:
        made.drop(("help", "resume"))
        if not ABOUT_SERVICE.search(now.text):
            made.drop(("complaint",))
        if "decline" in made.codes and not decline.holds(symptoms.without_reports(now.said)):
            made.drop(("decline",))
        is_kept = now.asked == "confirm" and accept.holds(symptoms.without_reports(now.said))
        if not (has_yes_word(now.said) or is_kept) or _FINE_BUT.match(now.text):
            made.drop(("accept",))
    if "help" in made.codes and not _asks_of_service_apart(now.text):
        made.drop(("explain",))
    is_of_place = re.search(r"address|located|direccion|ubica|open|abren", now.text)
    if "help" in made.codes and not is_of_place:
        made.drop(("where",))
    if "where" in made.codes and not has_yes_word(now.said) and _asks_opening_alone(now.text):
        made.forget_times()
        made.drop(("accept",) if decline.starts_with_no(now.said) else ("accept", "decline"))
    if {"done", "where"} <= made.codes and not now.said.has_question:
        made.drop(("where",))  # `donde mi cuñado`: at his place
    if "complaint" in made.codes:
        made.drop(("thanks",))
        if not has_yes_word(now.said) or _SARCASM.search(now.text):
            made.drop(("accept",))
    if "call" in made.codes and _CALL_AT.search(now.text):
        made.forget_times()
    if unclear.asks_for_machine(now.said):
        made.drop(("call", "help", "explain"))


def _asks_of_service_apart(text: str) -> bool:
    """Whether a clause that does not ask who we are asks what the service is (`who is this and why is it due`)."""
    clauses = [Said(text=one.strip()) for one in _CLAUSES.split(text) if one.strip()]
    return any(explain.holds(one) and not help_asked.holds(one) for one in clauses)


def _asks_opening_alone(text: str) -> bool:
    """Whether all its clauses ask when the shop is open, so that a day in them is asked about, not proposed."""
    asked = [bool(_OPENING.search(clause)) for clause in _CLAUSES.split(text) if re.search(r"[a-z\d]", clause)]
    return any(asked) and (
        all(asked) or not any(_A_TIME.search(c) for c in _CLAUSES.split(text) if not _OPENING.search(c))
    )


_CLAUSES = re.compile(r"[.,;!?]|\b(?:but|or|and|pero|o|y)\b(?! \d)")
_A_TIME = re.compile(
    r"\d|\b(?:monday|tuesday|wednesday|thursday|friday|saturday|sunday|tomorrow|today|lunes|martes|miercoles|jueves|"
    r"viernes|sabado|domingo|manana|hoy|morning|afternoon|noon|tarde)\b"
)
_CALL_AT = re.compile(
    r"(?<!sales )(?<!conference )\b(?:call|phone|ring|speak|talk|llam\w+|hablem?e?\w*|marqu\w+|"
    r"hablar)\b(?: (?!quedamos\b)\w+){0,6} (?:after|at|before|around|between|tomorrow|today|on|this|in|despues|"
    r"antes (?:de|del|que)|a las|por la|manana|hoy|el|cuando)\b(?!.*\b(?:works|bring|come in|drop|funciona|llevo|"
    r"quedamos|"
    r"llevar|puedo ir)\b)"
)
_FINE_BUT = re.compile(
    r"\W*(?:fine|good|great|ok|bueno|bien|all good|todo bien|perfecto|excelente)\b\W*(?:but|pero|except)"
)
_OPENING = phrases(
    r"open",
    r"close[sd]?",
    r"(?:un)?lock(?: up)?",
    r"how late",
    r"hours",
    r"cerrad[oa]s?",
    r"abren?",
    r"cierran?",
    r"abiert[oa]s?",
    r"horarios?",
    r"hasta que hora",
    r"trabajan",
    r"atienden",
)
_SARCASM = re.compile(
    r"\b(?:great|perfect|wonderful|fantastic|awesome|nice|lovely|fun|genial|que bien|perfecto|"
    r"que padre|maravilloso|goody|goodie|joy|super|terrific|brilliant|swell)[,!. ]+(?:another|more|yet|something "
    r"else|one more|"
    r"some more|here comes|as if|like i|how convenient|otr[oa]|mas|just|thanks for nothing|job|"
    r"now what|what now)"
)


_NOT_SURE_WHEN = re.compile(
    r"\b(?:idk|dont know|not sure|unsure) (?:yet )?(?:when|which day|what day|what time)(?: yet| exactly)*\W*$"
)
"""A yes without its day."""


def _settle_yes_and_no(now: Situation, made: Decision) -> None:
    has_yes, starts_no = has_yes_word(now.said), decline.starts_with_no(now.said)
    if {"accept", "decline"} <= made.codes:
        made.doubts.append("yes and no")
        made.drop(("accept",) if starts_no or not has_yes else ("decline",))
    if {"accept", "later"} <= made.codes and has_yes and _NOT_SURE_WHEN.search(now.text):
        made.drop(("later",))
    is_impossible = any(choice.day and choice.day.is_impossible for choice in now.read.choices)
    if made.times or now.said.is_any or is_impossible:
        if not has_yes:
            made.drop(("accept",))
        if "later" not in made.codes:
            made.drop(("decline",))
    elif made.avoid and not made.has("accept", "later", "propose", "cancel", "move"):
        made.become(
            "propose" if re.search(r"\bany(?! ?more)|cualquier|\btod[oa]s\b|\ball\b|\bevery", now.text) else "decline"
        )
    if made.has("later", "decline") and not made.times:
        made.needs = tuple(need for need in made.needs if need != "wait")
    if {"decline", "later"} <= made.codes and not limits.is_for_good(now.text):
        made.drop(("decline",))


def _settle_yes_and_later(now: Situation, made: Decision) -> None:
    """A yes counts for nothing beside a later, unless it says `but`, nor beside a consent given again."""
    is_yes_but = has_yes_word(now.said) and (now.said.is_any or re.search(r"\b(?:but|pero)\b", now.text))
    is_resume = "resume" in made.codes and not made.times
    if "accept" in made.codes and (is_resume or ("later" in made.codes and not is_yes_but)):
        made.drop(("accept",))


def _settle_offers(now: Situation, made: Decision) -> None:
    """The reply against the offered times."""
    pick = now.pick
    if now.reply.offered and _ANOTHER_DAY.search(now.text) and not made.times and not now.read.later:
        made.become("decline", ("accept", "later", "move", "propose"))
        made.question = "day"
        return
    if not now.reply.offered or made.has("later", "running_late", *_OVER_WITH):
        made.drop(("choose",))
        return
    if pick.is_too or pick.is_none:
        made.forget_times()
        made.become("decline", ("accept", "move", "cancel"))
        made.question = "time" if pick.is_too else None if _gives_up(now) else "day"
        made.is_settled = made.question is None
    elif pick.beyond:
        made.become("propose", ("accept", "choose", "decline", "move", "cancel"))
        made.times, made.avoid, made.question, made.is_settled = (pick.beyond,), (), None, True
    elif pick.named:
        _choose(now, made)
    elif made.times:
        made.drop(("decline",))
        if len({offer.time() for offer in now.reply.offered}) == 1:
            booking_replies.at_the_same_time(now, made, now.reply.offered[0])
    elif pick.ruled_out:
        made.forget_times()
        made.become("decline", ("accept", "move", "cancel"))
        made.avoid, made.question = tuple(point(offer) for offer in pick.ruled_out), "slot"
    elif "accept" in made.codes and now.asked in ("slot", "time", "day", "visit", "confirm"):
        _choose_all(now, made)


_GIVES_UP = phrases(
    r"(?:just )?forget (?:it|about it)",
    r"never ?mind",
    r"olvid\w+lo",
    r"(?:ya |mejor )*asi (?:l[oa]s? )?(?:dej\w+|voy a dejar)",
    r"(?:brother|uncle|dad|son|cousin|buddy|friend|nephew|husband)(?: (?:in|n) law)? (?:is |will |can )?(?:gonna |"
    r"going to )?(?:do|fix)(?: it)?",
)
"""With none of the offers, it is off."""


def _gives_up(now: Situation) -> bool:
    return bool(_GIVES_UP.search(now.text)) or decline.goes_to_somebody(now.said)


_ANOTHER_DAY = phrases(r"(?:another|a different|some other|different|other) (?:day|date)s?", r"otro dia", r"otra fecha")


def _choose(now: Situation, made: Decision) -> None:
    named = now.pick.named
    made.become("choose", ("accept", "propose", "decline", "move", "cancel", "odometer"))
    made.times, made.avoid = tuple(point(offer) for offer in named), ()
    made.chosen = named[0] if len(named) == 1 else None
    made.question = None if len(named) == 1 or now.pick.is_open else "slot"
    made.is_settled = made.question is None


def _choose_all(now: Situation, made: Decision) -> None:
    offers = now.reply.offered
    made.become("choose", ("accept", "propose"))
    made.times = tuple(point(offer) for offer in offers)
    made.chosen = offers[0] if len(offers) == 1 else None
    made.question = None if len(offers) == 1 or made.has(*ASIDES) else "slot"


def _settle_asked(now: Situation, made: Decision) -> None:
    """What the question that we asked makes of the words."""
    asked = now.asked
    if asked == "after_visit":
        settle_after_visit(now, made)
    if asked == "car" and now.reply.cars:
        _settle_car(now, made)
    elif now.reply.cars:
        made.car = cars.find_car(now.text, now.reply.cars, False)[0]
    if asked is None and made.codes and made.codes <= {"accept", "thanks"} and not _YES.match(now.text):
        made.codes = {"thanks"}
    if asked == "odometer" and _WILL_LOOK.search(now.text) and "odometer" not in made.codes:
        made.forget_times()
        made.become("later", ("accept", "decline"))
    if asked == "odometer" and "odometer" in made.codes and not any(choice.day for choice in now.read.choices):
        made.forget_times()
        made.drop(("later", "accept", "decline"))
        beside = replace(now.said, text=odometer_reading.without_reading(now.text, "odometer"))
        if not done.holds(beside):
            made.drop(("done",))


_WILL_LOOK = phrases(r"(?:look|check|see|find out|let you know|tell you|checo|reviso|veo|miro|checar|revisar)")
_YES = re.compile(r"(?:yes|yeah|yep|si|sure|claro)\b")


def _settle_car(now: Situation, made: Decision) -> None:
    car, are_all = cars.find_car(now.text, now.reply.cars, True)
    if len(now.reply.cars) == 1 and "accept" in made.codes:
        car = now.reply.cars[0]
    made.car = car
    if cars.answered_first(now.text, now.reply.cars):
        made.forget_times()
        made.drop(("later",))
        made.until = None
    elif (car or are_all) and made.until is None and _FOR_NOW.search(now.text):
        made.drop(("later",))
    if car or are_all:
        made.become(
            "accept",
            ("decline", "unclear", "choose", "gone") if not made.has("gone") else ("decline", "unclear", "choose"),
        )
    elif "accept" in made.codes:
        made.question = "car"


_FOR_NOW = phrases(r"for now", r"por (?:ahora|el momento)")


def _prefer_reading(now: Situation, made: Decision) -> None:
    """`maybe 48500` answers the question, whatever doubt stands beside it."""
    found = odometer_reading.find_reading(now.text, now.asked) if now.asked == "odometer" else None
    if found and found.value >= odometer_reading.SURELY_A_READING:
        made.drop(("later",))


def _settle_reading(now: Situation, made: Decision) -> None:
    if "odometer" not in made.codes:
        return
    found = odometer_reading.find_reading(now.text, now.asked)
    if found is None:
        made.drop(("odometer",))
        return
    known = now.reply.odometer
    unit = found.unit or (known.unit if known else "mi")
    if odometer_reading.is_doubtful(found.value, unit, known, now.today):
        made.question = made.question or "odometer"
        made.is_settled = True
        made.doubts.append("odometer")
    else:
        made.odometer = OdometerReading(value=found.value, unit=unit)


def _settle_over(now: Situation, made: Decision) -> None:
    """After a stop, a stranger, a car that is gone or work that is done, nothing is arranged in the same breath."""
    if not made.has(*_OVER_WITH):
        return
    if _BUT.search(now.text) and not made.has("stop", "stranger"):
        return
    made.forget_times()
    made.until = None
    made.drop(("later", "move", "running_late"))
    if now.asked != "car" or not cars.answered_first(now.text, now.reply.cars):
        made.drop(("accept",))
    if not decline.starts_with_no(now.said):
        made.drop(("decline",))
    made.is_settled = True


_BUT = phrases(
    r"but",
    r"pero",
    r"other(?! (?:shop|place|guy|garage|mechanic))",
    r"otr[oa](?! (?:taller|lado|lugar|parte|"
    r"mecanico))",
    r"still",
    r"todavia",
    r"just need",
)


def _settle_rest(now: Situation, made: Decision) -> None:
    """What no code names goes to a person; politeness counts only alone."""
    known = made.codes - {"unclear", "thanks"}
    if unclear.asks_for_machine(now.said) or (
        asks_something_else(now) and "stop" not in known and "unclear" not in made.without
    ):
        made.codes.add("unclear")
    elif known:
        made.drop(("unclear",))
    if asks_for_booking(now):
        made.drop(("explain", "duration", "where", "complaint", "accept"))
    if not known and made.needs and "unclear" not in made.codes and now.asked in ("visit", "day", "time", "confirm"):
        made.codes.add("accept")
    if made.codes - {"thanks"}:
        made.drop(("thanks",))
    if not made.codes:
        made.codes = {"unclear"}


def _settle_question(now: Situation, made: Decision) -> None:
    """What is still to be asked once the meanings stand."""
    if made.question == "confirm_stop":
        return
    if made.has("stop", "later", "running_late", "stranger", "gone", "complaint") or (
        made.has("cancel") and not made.times
    ):
        made.question = made.question if made.question == "odometer" else None
        return
    if made.is_settled or now.asked == "walk_in":
        made.question = None if now.asked == "walk_in" else made.question
        return
    is_bare_yes = "accept" in made.codes and not made.times and "propose" not in made.codes
    if made.has("unclear", "call", *ASIDES) and (is_bare_yes or "decline" in made.codes):
        made.question = None
    elif "move" in made.codes and not made.times and made.question is None:
        made.question = "day"
    elif is_bare_yes and made.question is None and "symptom" not in made.codes:
        made.question = _ASKED_AGAIN.get(now.asked or "")
    elif "decline" in made.codes and made.avoid and made.question is None:
        made.question = "day"


_ASKED_AGAIN = {"visit": "day", "day": "day", "time": "time", "odometer": "odometer"}
