"""`propose`: the customer names a day or a time that suits; which ones is read in `times.py`."""

from __future__ import annotations

from followup.core.replies.said import Said

CODE = "propose"
EXAMPLES = {
    "en": (
        "tues morning",
        "how about thurs after 3",
        "friday at 10?",
        "asap",
        "any day but monday",
        "sometime next wk",
    ),
    "es": (
        "el martes en la manana",
        "puedo el jueves despues de las 3",
        "el viernes a las 10?",
        "lo antes posible",
        "cualquier dia menos el lunes",
    ),
}


def holds(said: Said) -> bool:
    """Whether it names visit times, or any."""
    return said.has_times or said.is_any
