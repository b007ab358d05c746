"""How likely it is that a reading is right, from features of the parse."""

from __future__ import annotations

from followup.core.replies.decision import Decision
from followup.core.replies.meaning import in_rank
from followup.core.replies.situation import Situation

EMOJI_CERTAINTY = 0.6
"""The most that a lone emoji is worth."""


def how_certain(now: Situation, made: Decision) -> float:
    """Between 0 and 1, calibrated on labeled replies; lower where much was said that no word list knows."""
    lead = in_rank(made.codes)[0]
    words = now.plain.text.split()
    sure = 0.97 if len(words) <= 6 else 0.95
    if lead == "unclear":
        sure = 0.6
    if now.plain.is_emoji_only:
        sure = EMOJI_CERTAINTY
    if len(words) > 12:
        sure -= 0.06
    if len(words) > 25:
        sure -= 0.15
    if len(made.times) > 2:
        sure -= 0.1
    if now.read.has_bare_hour:
        sure -= 0.05
    if made.times and made.avoid:
        sure -= 0.08
    sure -= 0.2 * len(made.doubts)
    if made.question in ("day", "time", "slot", "am_or_pm", "odometer", "car") and made.times:
        sure -= 0.05
    main = len(made.codes - {"thanks"})
    if main > 2:
        sure -= 0.1
    return round(min(max(sure, 0.05), 0.99), 2)
