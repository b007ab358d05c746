"""How likely it is that a reading is right: a logistic model of a few features of the parse, fitted on labeled replies.

Right means what the contract's certainty promises: the first meaning, the times, the chosen offer and the reading are
all right. The weights were fitted by `python -m tests.replies.fit_certainty` on replies that no word list was mended
by, and are checked there by cross-validation; run it again after a change of the features or of the word lists.
"""

from __future__ import annotations

from math import exp, log

from followup.core.replies.decision import Decision
from followup.core.replies.meaning import MEANINGS, in_rank
from followup.core.replies.resemblance import resembles
from followup.core.replies.situation import Situation

EMOJI_CERTAINTY = 0.6
"""The most that a lone emoji is worth."""
LEAST, MOST = 0.02, 0.99
_ALL = frozenset(MEANINGS)
_ABOUT_TIMES = frozenset({"propose", "choose", "move"})
_PLAIN = frozenset({"stop", "symptom", "choose", "odometer", "running_late"})
"""Meanings that stand on words of their own and are rarely taken for another."""

WEIGHTS: dict[str, float] = {
    "one": 2.40,
    "length": -1.20,
    "alike": 1.56,
    "strange": 0.35,
    "guessed": -0.80,
    "doubts": 0.10,
    "unclear": -1.42,
    "plain": 0.66,
    "thanks": -0.54,
    "times": 0.18,
    "many times": -0.86,
    "bare hour": -0.35,
    "both ways": 0.03,
    "several": -1.08,
}


def features(now: Situation, made: Decision) -> dict[str, float]:
    """What the parse shows of how sure it is, each about 0 to 1."""
    lead = in_rank(made.codes)[0]
    is_time = bool(made.times) and (lead in _ABOUT_TIMES or {"accept", "propose"} <= made.codes)
    alike = {"accept", "propose"} if {"accept", "propose"} <= made.codes else {lead}
    words = now.plain.text.split()
    guess = resembles(now.reply.text, _ALL)
    return {
        "one": 1.0,
        "length": log(1 + len(words)) / 3,
        "alike": sum(guess.shares[code] for code in alike) if guess else 0.0,
        "strange": 1 - guess.known if guess else 1.0,
        "guessed": float("guessed" in made.doubts),
        "doubts": float(bool(set(made.doubts) - {"guessed"})),
        "unclear": float(lead == "unclear"),
        "plain": float(lead in _PLAIN),
        "thanks": float(lead == "thanks"),
        "times": float(is_time),
        "many times": float(len(made.times) > 2),
        "bare hour": float(now.read.has_bare_hour and bool(made.times)),
        "both ways": float(bool(made.times and made.avoid)),
        "several": max(len(made.codes - {"thanks"}) - 1 - ({"accept", "propose"} <= made.codes), 0) / 2,
    }


def how_certain(now: Situation, made: Decision) -> float:
    """Between 0 and 1: the share of readings with such features that are right."""
    score = sum(WEIGHTS.get(name, 0.0) * value for name, value in features(now, made).items())
    sure = 1 / (1 + exp(-score))
    if now.plain.is_emoji_only:
        sure = min(sure, EMOJI_CERTAINTY)
    return round(min(max(sure, LEAST), MOST), 2)
