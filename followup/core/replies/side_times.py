"""Days, hours and numbers that are told for something else than the visit, taken out before visit times are read.

What stays is the same text with those words left out, so that `the night before for Thursday` names Thursday alone.
"""

from __future__ import annotations

import re

_SIDE = re.compile(
    r"\b(?:the )?(?:night|evening) before\b(?: for| of)?|\bla noche (?:antes|anterior)(?: (?:del?|al?))?"
    r"|\b(?:the )?next (?:day|morning) pick ?up\b"
    r"|\b(?:after|in|for|since) \d+ (?:visits?|times|tries|attempts)\b"
    r"|\b(?:wait\w*|sat there|was there|esper\w+|tard\w+) (?:\w+ ){0,3}(?:\d+|an?|una?) (?:hours?|horas?)\b"
    r"|\b(?:quit|stopped|quitting) smoking\b"
)


def without_side_times(plain: str) -> str:
    """The plain text without what names no visit time."""
    return " ".join(_SIDE.sub(" ", plain).split()) if _SIDE.search(plain) else plain
