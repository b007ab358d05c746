"""Where the word lists are silent or a text is clearly like something else: the meaning that it is most like.

The word lists have a head start, the larger the more they are to be believed. What is read and not resembled (offers,
readings, times) and what gives a consent is never guessed.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from followup.core.replies import cars, limits, stop_grammar, symptoms
from followup.core.replies.decision import Decision
from followup.core.replies.intents import decline
from followup.core.replies.likeness import likeness
from followup.core.replies.meaning import MEANINGS, in_rank
from followup.core.replies.other_questions import asks_for_booking, is_named
from followup.core.replies.said import phrases
from followup.core.replies.situation import Situation
from followup.core.replies.yes_words import has_yes_word

HEAD_START = 1.2
HEAD_STARTS = {
    "unclear": 0.05, "call": 0.4, "explain": 0.6, "stranger": 0.6, "thanks": 0.6, "later": 0.7, "complaint": 0.8,
    "where": 0.7, "done": 0.9, "decline": 1.4, "propose": 1.7, "gone": 1.7, "cancel": 1.7, "accept": 3.0,
}  # fmt: skip
"""What the word lists are worth by what they say, fitted on replies by which they were not mended."""
_READ = frozenset({"choose", "odometer", "resume"})
"""What is read, never guessed."""
_STANDS = _READ | {"stop", "symptom"}
"""What the words have said stands."""
_SETTLED = ("odometer", "car", "confirm_stop")
"""What was asked where a text is its answer, whatever it resembles."""
_WITH_BOOKING = frozenset({"cancel", "move", "running_late"})
STOP_BEFORE_COMPLAINT = 0.15
"""What a stop is ahead of its neighbors: a stop that is missed is worse than one too many."""
LEAST_SCORES = {"stop": 0.6, "symptom": 0.5, "stranger": 0.0, "propose": 0.3}
"""Scores that a guess needs at least; the others need `LEAST_SCORE`."""
LEAST_SCORE = -0.8


_DENIABLE = frozenset({"stop", "symptom"})
_DENIED = re.compile(
    r"\b(?:no|non|not|dont|never|without|any|sin|ningun\w*|todo bien|all good|fine|bien|stuck (?:in|at)|traffic)\b"
)
"""Beside such a word a likeness to a stop or a symptom is no ground to say one: the word lists read what is denied."""
ADDED_FROM = {
    "symptom": 0.5, "stranger": 0.2, "gone": 0.1, "done": 0.1, "later": 0.2, "decline": 0.1, "call": 0.1, "price": 0.1,
    "duration": 0.3, "explain": 0.3, "unclear": -0.1,
}  # fmt: skip
"""Scores from which a meaning that no word list found stands beside the others."""
ADDED_TO_A_PRICE_FROM = 1.0
"""The score of a symptom that stands beside a price: a part is named there to ask what it costs."""
DROPPED_BELOW = {"explain": -0.3, "unclear": -0.3, "complaint": -0.6, "later": -0.6}
"""Scores below which a meaning that the word lists found behind the leading one is left out."""


@dataclass(frozen=True)
class Second:
    """What a likeness changes: meanings that come in, and meanings that go."""

    added: frozenset[str] = frozenset()
    dropped: frozenset[str] = frozenset()


def second_thoughts(now: Situation, made: Decision) -> Second:
    """What the likeness of the text adds to the meanings that the word lists made, or takes from them."""
    lead = in_rank(made.codes)[0]
    if "stop" in made.codes or asks_for_booking(now) or now.asked in _SETTLED or now.plain.is_emoji_only:
        return Second()
    scores = likeness(now.said).scores
    other = _rather(now, made, lead, scores)
    added = {code for code, least in ADDED_FROM.items() if scores[code] >= least and _may_be(code, now, made)}
    if "accept" in made.codes:
        added.discard("decline")
    if lead == "decline" and decline.goes_to_somebody(now.said):
        added -= {"gone", "later"}
    if "price" in made.codes and scores["symptom"] < ADDED_TO_A_PRICE_FROM:
        added.discard("symptom")
    if made.times or made.avoid:
        added.discard("later")
    dropped = {code for code, most in DROPPED_BELOW.items() if code in made.codes and scores[code] < most}
    added = (added | {other}) - {lead} - made.codes if other else added - made.codes
    gone = (dropped - {lead}) | ({lead} if other else set())
    return Second(frozenset(added), frozenset(gone - added))


def _rather(now: Situation, made: Decision, lead: str, scores: dict[str, float]) -> str | None:
    """The meaning that should lead instead of what the word lists found; None where they are believed."""
    if now.asked == "car" and lead == "accept" and made.car and cars.answered_first(now.text, now.reply.cars):
        return None
    if lead in _STANDS or (lead == "accept" and has_yes_word(now.said)) or (lead == "later" and made.until):
        return None
    if lead in ("complaint", "decline") and (
        decline.goes_to_somebody(now.said) or (now.said.language == "es" and _is_less_than_a_stop(now.text))
    ):
        return None
    likely = {code: score for code, score in scores.items() if code == lead or _may_be(code, now, made)}
    likely[lead] += HEAD_STARTS.get(lead, HEAD_START)
    if "stop" in likely and lead != "stop":
        likely["stop"] += STOP_BEFORE_COMPLAINT
    best = max(likely, key=lambda code: (likely[code], -MEANINGS.index(code)))
    return best if best != lead and scores[best] >= LEAST_SCORES.get(best, LEAST_SCORE) else None


_WE_BUY = phrases(r"do (?:you|u|ya|yall)(?: guys)? (?:\w+ )?(?:buy|take|want|purchase)(?: \w+){0,4}")
"""`do you buy junk cars` asks, and tells nothing of the customer's car."""


def _is_less_than_a_stop(plain: str) -> bool:
    """Whether only the number, the hour or one subject of the texts is minded."""
    return limits.minds_number_or_hour(plain) or limits.is_about_one_subject(plain)


def _may_be(code: str, now: Situation, made: Decision) -> bool:
    if code in _READ:
        return False
    if code in _DENIABLE and _DENIED.search(now.text):
        return False
    if code == "stop" and stop_grammar.has_other_uses(now.text, now.booked is not None):
        return False
    if code == "stop" and now.said.language == "es" and _is_less_than_a_stop(now.text):
        return False
    if code == "symptom":
        return symptoms.may_report(now.text)
    if code in ("where", "gone") and (is_named(now.text) or _WE_BUY.search(now.text)):
        return False
    if code == "thanks" and made.has("decline", "later", "call", "done", "gone"):
        return False
    if code in ("done", "gone") and now.said.has_question and "where" in made.codes:
        return False
    if code in _WITH_BOOKING:
        return now.booked is not None
    return code != "propose" or (now.asked in ("visit", "day", "time") and not (made.avoid and not made.times))
