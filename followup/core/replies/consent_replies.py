"""What a reply means for the consent to be texted: taken back, taken back in part, or left as it is."""

from __future__ import annotations

import re

from followup.core.replies import limits, stop_answers
from followup.core.replies.decision import Decision
from followup.core.replies.intents import stop
from followup.core.replies.said import phrases
from followup.core.replies.situation import Situation

ABOUT_SERVICE = phrases(
    r"overcharg\w*",
    r"charged",
    r"rip(?:ped)?",
    r"rude",
    r"scam\w*",
    r"scratch\w*",
    r"broke",
    r"damag\w*",
    r"service",
    r"refund",
    r"terrible",
    r"worst",
    r"bill",
    r"your work",
    r"cobraron",
    r"servicio",
    r"rayaron",
    r"estafa",
    r"reembolso",
    r"rateros",
    r"pesimo",
    r"you guys (?:did|messed)",
    r"unhappy",
    r"last time",
    r"disappointed",
    r"unprofessional",
    r"no quedo (?:\w+ )?bien",
    r"quedo (?:\w+ )?(?:mal|peor)",
)
"""Words that speak of the work or the bill, not of the texts."""


def settle_consent(now: Situation, made: Decision) -> None:
    """A stop leaves nothing arranged beside it; what comes short of one is asked back."""
    if "stop" in made.codes:
        is_keyword_only = stop.is_keyword(now.said) and not _BOOKING.search(now.text)
        if is_keyword_only and _CANCEL_ALONE.search(now.text) and now.booked:
            made.codes.add("cancel")
        elif not _BOOKING.search(now.text) and (is_keyword_only or now.booked is None):
            made.drop(("cancel",))
        made.drop(("accept", "decline", "later", "move", "help", "resume", "explain", "running_late", "thanks"))
        if _NO_OF_ITS_OWN.match(now.text) and now.asked != "confirm_stop":
            made.codes.add("decline")
        if not ABOUT_SERVICE.search(now.text):
            made.drop(("complaint",))
        made.forget_times()
        made.needs = ()
        return
    if "resume" in made.codes and now.asked is None:
        made.drop(("accept", "decline"))
    if now.asked == "confirm_stop":
        _settle_no_to_stop(now, made)
    elif limits.is_short_of_a_stop(now.text):
        made.forget_times()
        made.drop(("later", "accept"))
        if limits.minds_number_or_hour(now.text):
            made.drop(("decline",))
        made.question, made.is_settled = "confirm_stop", True


_NO_OF_ITS_OWN = re.compile(
    r"\W*(?:(?:hi|hello|hola|sorry)\W+)?(?:(?:im |we are |i am )?not interested\b(?! in (?:your|the|these|getting) )|"
    r"no (?:thanks|thank you|gracias)\b|no me interesa\b(?! (?:que|recibir)))(?=.*[a-z])"
)
"""A no to the visit that stands before the stop."""
_BOOKING = phrases(r"appointments?", r"booking", r"visit", r"citas?", r"reservation", r"reservacion")
_CANCEL_ALONE = phrases(r"cancel(?:ar)?")
_KEEP = phrases(
    r"keep",
    r"sigan?",
    r"not all",
    r"only",
    r"solo",
    r"just (?:the|those|that|about)",
    r"nomas",
    r"dont stop",
    r"continu\w+",
    r"mantengan",
    r"no (?:los |me los |las )?(?:quiten|paren|borren)",
)


_NO = phrases(
    r"\W*(?:(?:nombre|hombre|ay|uy|oh|ah) )?no+(?! (?:more|mas|me (?:mand|escrib|text|moles)\w*|quiero|gracias ya))"
)


def _settle_no_to_stop(now: Situation, made: Decision) -> None:
    is_no = "decline" in made.codes or bool(_NO.match(now.text)) or stop_answers.declines(now.said)
    if "accept" in made.codes and not _KEEP.search(now.text) and not is_no:
        made.become("stop", ("accept",))
        made.is_settled = True
        return
    if is_no or _KEEP.search(now.text):
        made.become("decline", ("accept", "resume", "later", "complaint", "propose"))
        made.is_settled = True
