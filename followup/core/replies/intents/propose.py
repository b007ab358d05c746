"""`propose`: the customer names a day or a time that suits; which ones is read in `times.py`."""

from __future__ import annotations

from followup.core.replies.said import Said, phrases

CODE = "propose"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "tues morning", "how about thurs after 3", "friday at 10?", "asap", "any day but monday",
        "sometime next wk", "anything thursday?", "can i come in sat", "tmrw at 2", "im free friday",
        "i can do mon or tues", "mornings are best", "wednesdays are good", "soonest u got", "thurs b4 noon",
        "is friday open", "next monday at 9", "would sat morning work", "thursdays good", "what about the 12th",
        "this friday after 4", "tomorrow afternoon", "could bring it thurs", "anytime monday", "first thing fri",
        "whenever you have an opening", "around 10 on tues", "can do friday", "monday would be good",
        "saturday morning please", "next available", "how's tuesday", "tomorrow if possible",
        "the earlier the better", "any day next week", "after 2 on monday", "i can come by wednesday",
    ),
    "es": (
        "el martes en la manana", "puedo el jueves despues de las 3", "el viernes a las 10?", "lo antes posible",
        "cualquier dia menos el lunes", "puedo el sabado", "manana a las 2", "el jueves tempranito",
        "lunes o martes", "tienen lugar el viernes", "la proxima semana", "a la hora que puedan", "hoy en la tarde",
        "yo descanso los martes", "el 12 en la manana", "puede ser el viernes", "lo llevo el jueves",
        "pasado manana", "el lunes despues del trabajo", "para el martes se puede?", "manana temprano",
        "el sabado a las 9", "que tal el jueves", "viernes por la tarde", "antes de las 10 el lunes",
        "cuando tengan espacio", "entre semana en la tarde", "el lunes", "puedo manana", "el sabado en la manana",
        "cuando tengan lugar", "para el viernes", "el martes a las 10", "lo mas pronto posible", "cualquier dia",
        "en la tarde el jueves",
    ),
}  # fmt: skip


_ASKS_FOR_TIMES = phrases(
    r"when can (?:you|yall|u) (?:guys )?(?:take|fit|get|see|do|squeeze|look)(?: \w+){0,3}",
    r"^any\Z",
    r"(?:as )?(?:early|soon|quick) as (?:possible|you can|u can)",
    r"the (?:earlier|sooner) the better",
    r"(?:next|first|earliest|soonest) available(?: \w+)?",
    r"lo (?:mas pronto|antes) (?:que se pueda|posible)",
    r"whenever (?:you|works|its|it is|is|there|your)(?: \w+)*",
    r"(?:a la hora|el dia|cuando) que (?:puedan?|quieran?|tengan?|gusten?)",
    r"cuando (?:tengan|haya|puedan|gusten) (?:\w+ )?(?:lugar|espacio|cita|chance|campo|tiempo)?",
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
