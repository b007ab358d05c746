"""`move`: the customer wants to change the booking that stands."""

from __future__ import annotations

from followup.core.replies.said import Said, phrases

CODE = "move"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "can we move it to friday",
        "need to reschedule",
        "is there a later time that day?",
        "something came up, different day?",
        "can u push it back an hr",
        "swap my appt to thurs pls",
    ),
    "es": (
        "podemos moverla al viernes?",
        "necesito cambiar mi cita",
        "quiero reagendar",
        "se puede otro dia?",
        "mejor el jueves a las 10",
    ),
}

_IT = r"(?:it|that|this|them|mine|things|my \w+|the \w+|our \w+|my \w+ \w+|the \w+ \w+|us|me|\w+day(?:s)?)"
_WISH = phrases(
    r"re ?-?sched\w*",
    r"rebook\w*",
    rf"(?:move|moving|switch|push|bump|swap|postpone|shift|bring|change|changing|delay|slide|kick|"
    rf"pull|scoot) {_IT}",
    r"(?:move|push|bump|bring|pull) (?:back|up|forward|out|ahead)",
    r"(?:another|a different|different|some other|other|new) (?:day|time|date|week|slot|"
    r"appointment|hour)",
    r"postpone",
    r"rain ?check",
    r"(?:change|move|switch) (?:the |my )?(?:appointment|booking|time|day|date|slot|visit)",
    r"(?:come|do it|get in|be there|drop (?:it|her)(?: off)?|bring it(?: in)?|go|make it|"
    r"get there|have it) (?:\w+ )?(?:earlier|later|sooner)(?! (?:i|in the|today))",
    r"(?:an? )?(?:earlier|later|sooner) (?:time|slot|day|appointment|date|opening|one|start)",
    r"(?:anything|something|any|slots?) (?:available )?(?:earlier|later|sooner|else)",
    r"(?:hour|hours|minutes|min|hr) (?:earlier|later|sooner)",
    r"instead",
    r"(?:re)?agend(?:ar|arla|e|en|o)(?= |\Z)(?! (?:una|la cita|cita))",
    r"reagend\w+",
    r"reprogram\w+",
    r"(?:mover|mueva|muevan|moverl[ao]|movemos|muevela|muevanla|moverme|moverse|moverlo)\w*",
    r"cambi(?:ar|arl[ao]|en|e|enl[ao]|el[ao]|arme|o|emos|amos) (?:\w+ ){0,3}(?:cita|hora|dia|"
    r"fecha|turno|al?|para|por otro|horario)",
    r"(?:cambiarl[ao]|cambienl[ao]|cambiela|cambiarme|cambiarmela)",
    r"(?:pospon|aplaz|recorr|adelant|atras)(?:er|ar|erl[ao]|arl[ao]|gan?|en|e|amos)\w*",
    r"(?:pasar|pasarl[ao]|pasemos|pasen|pasarme)l?[ao]? (?:al?|para|la cita)",
    r"otr[oa] (?:dia|hora|fecha|horario|momento|cita)",
    r"(?:en vez|en lugar) de\w*",
    r"mejor (?:el|la|a las?|en la|por la|manana|otro|para|pasado|lunes|martes|miercoles|jueves|"
    r"viernes|sabado|mas|hoy)",
    r"(?:mas|un poco mas) (?:tarde|temprano)",
)
_NO_WISH = phrases(
    r"(?:dont|do not|no need to|not) (?:need to |want to )?(?:move|change|reschedule|switch)\w*",
    r"no (?:la |lo )?(?:cambien?|muevan?|mueva)",
    r"change (?:my|the) (?:oil|tires?|brakes?|pads?|filter|battery|wipers?|mind|number|fluid|belt|plugs)",
)


def holds(said: Said) -> bool:
    """Whether the standing booking is to be changed."""
    plain = _NO_WISH.sub(" ", said.text)
    return said.has_booking and bool(_WISH.search(plain))
