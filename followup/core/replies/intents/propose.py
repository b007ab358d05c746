"""`propose`: the customer names a day or a time that suits; which ones is read in `times.py`."""

from __future__ import annotations

from followup.core.replies.said import Said, phrases

CODE = "propose"
EXAMPLES: dict[str, tuple[str, ...]] = {
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


_ASKS_FOR_TIMES = phrases(
    r"when (?:can|could|should|may) (?:i|we) (?:come|bring|stop|drop|get|swing|be)(?: \w+)*",
    r"when (?:are|is|do) (?:you|the shop|yall) (?:guys )?(?:available|free|have (?:time|openings?|"
    r"space))",
    r"(?:what|which) (?:days?|times?|slots?|appointments?|openings?|"
    r"availability) (?:\w+ )?(?:do you|are|is|you) (?:\w+ )?(?:have|available|free|good)",
    r"what (?:do you have|is) (?:available|open)",
    r"what (?:works|is good|is best) for you",
    r"when works",
    r"(?:any|have any) (?:openings?|availability|appointments)",
    r"cuando (?:puedo|podria|podemos) (?:ir|llevar\w*|pasar|llegar)",
    r"(?:que|cuales) (?:dias?|horas?|horarios?|citas) (?:\w+ )?(?:tienen|hay|disponible\w*)",
    r"cuando (?:tienen|hay) (?:\w+ )?(?:lugar|espacio|cita|disponib\w+|chance)",
)


def holds(said: Said) -> bool:
    """Whether it names visit times, any, or asks which there are."""
    return said.has_times or said.is_any or bool(_ASKS_FOR_TIMES.search(said.text))
