"""How likely it is that a reading is right: a logistic model of a few features of the parse, fitted on labeled replies.

Right means what the contract's certainty promises: the first meaning, the times, the chosen offer and the reading are
all right. The weights were fitted by `python -m tests.replies.fit_certainty` on replies that no word list was mended
by, and are checked there by cross-validation; run it again after a change of the features or of the word lists.
"""

from __future__ import annotations

import re
from math import exp, log

from followup.core.replies.decision import Decision
from followup.core.replies.likeness import likeness
from followup.core.replies.meaning import in_rank
from followup.core.replies.situation import Situation

EMOJI_CERTAINTY = 0.6
"""The most that a lone emoji is worth."""
LEAST, MOST = 0.02, 0.99
_ABOUT_TIMES = frozenset({"propose", "choose", "move"})
_SAID_LIKE = {"move": ("propose",), "choose": ("propose", "accept")}
"""What is said in the same words: a booking or an offer alone makes the difference."""
_PLAIN = frozenset({"stop", "symptom", "choose", "odometer", "running_late"})
"""Meanings that stand on words of their own and are rarely taken for another."""

WEIGHTS: dict[str, float] = {
    "one": 2.08,
    "length": -0.63,
    "alike": 1.17,
    "ahead": 0.52,
    "left out": -0.70,
    "offers": -0.05,
    "booked": -0.09,
    "needs": 0.19,
    "strange": -0.59,
    "unread": -0.43,
    "guessed": -0.90,
    "doubts": -0.44,
    "unclear": -0.30,
    "plain": 0.67,
    "thanks": 0.06,
    "times": 0.39,
    "many times": 0.05,
    "bare hour": -0.81,
    "asides": 0.02,
    "both ways": 0.03,
    "several": -0.18,
}


def features(now: Situation, made: Decision) -> dict[str, float]:
    """What the parse shows of how sure it is, each about 0 to 1."""
    lead = in_rank(made.codes)[0]
    is_time = bool(made.times) and (lead in _ABOUT_TIMES or {"accept", "propose"} <= made.codes)
    alike = {"accept", "propose"} if {"accept", "propose"} <= made.codes else {lead, *_SAID_LIKE.get(lead, ())}
    words = now.plain.text.split()
    heard = likeness(now.said)
    own = max(heard.scores[code] for code in alike)
    others = max(score for code, score in heard.scores.items() if code not in alike)
    return {
        "one": 1.0,
        "length": log(1 + len(words)) / 3,
        "alike": min(max(own, -1.0), 1.0),
        "ahead": min(max(own - others, -1.5), 1.5),
        "left out": min(max(max(score for code, score in heard.scores.items() if code not in made.codes), -1.5), 1.0),
        "offers": float(bool(now.reply.offered)),
        "booked": float(now.booked is not None),
        "needs": float(bool(made.needs)),
        "strange": 1 - heard.known,
        "unread": float(_has_unread(now, made)),
        "guessed": float("guessed" in made.doubts),
        "doubts": float(bool(set(made.doubts) - {"guessed"})),
        "unclear": float(lead == "unclear"),
        "plain": float(lead in _PLAIN),
        "thanks": float(lead == "thanks"),
        "times": float(is_time),
        "many times": float(len(made.times) > 2),
        "bare hour": float(now.read.has_bare_hour and bool(made.times)),
        "asides": float(bool(now.read.asides)),
        "both ways": float(bool(made.times and made.avoid)),
        "several": max(len(made.codes - {"thanks"}) - 1 - ({"accept", "propose"} <= made.codes), 0) / 2,
    }


_NAMED = re.compile(
    r"\d+|\b(?:monday|tuesday|wednesday|thursday|friday|saturday|sunday|tomorrow|today|noon|morning|afternoon|"
    r"evening|week|"
    r"lunes|martes|miercoles|jueves|viernes|sabado|domingo|hoy|tarde|semana)\b"
)


def _has_unread(now: Situation, made: Decision) -> bool:
    """Whether more numbers and names of days stand in the text than the result can hold."""
    named = len(_NAMED.findall(now.text))
    held = sum(2 if entry.grain in ("time", "part") else 1 for entry in (*made.times, *made.avoid))
    held += 2 * (made.odometer is not None) + 2 * (made.until is not None)
    return named > held


def how_certain(now: Situation, made: Decision) -> float:
    """Between 0 and 1: the share of readings with such features that are right."""
    score = sum(WEIGHTS.get(name, 0.0) * value for name, value in features(now, made).items())
    sure = 1 / (1 + exp(-score))
    if now.plain.is_emoji_only:
        sure = min(sure, EMOJI_CERTAINTY)
    return round(min(max(sure, LEAST), MOST), 2)
