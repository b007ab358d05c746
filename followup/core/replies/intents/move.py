"""`move`: the customer wants to change the booking that stands."""

from __future__ import annotations

from followup.core.replies.said import Said, phrases

CODE = "move"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "can we move it to friday", "need to reschedule", "is there a later time that day?",
        "something came up, different day?", "can u push it back an hr", "swap my appt to thurs pls",
        "gotta change my appt", "could i come monday instead", "can we do 11 that day", "need a diff time",
        "change it to next week", "any chance we can do it later in the day", "can i switch days",
        "have to move thursday", "can we bump it to 10", "i need to change the day", "is friday open instead",
        "thursday wont work anymore, friday?", "can i get a later slot", "lets do monday instead",
        "push it to next tues", "can you do an earlier time", "thursday is bad now, other day?", "need to rebook",
        "can i come at 10 not 9", "reschedule pls", "reschedule please", "can i change my time",
        "need to move my appointment", "can we do it another day", "something came up can we do friday",
        "i need a later time", "any way to come in earlier", "switch me to monday", "can we push it to 11",
        "i forgot i work thursday, friday ok?", "could we make it next week",
    ),
    "es": (
        "podemos moverla al viernes?", "necesito cambiar mi cita", "quiero reagendar", "se puede otro dia?",
        "mejor el jueves a las 10", "me la cambia para el lunes?", "puedo ir mas tarde ese dia?",
        "cambieme la hora porfa", "se puede recorrer la cita", "no puedo el jueves, puede ser viernes?",
        "pasela para el martes", "otra hora tienen?", "quiero cambiar el dia", "muevamela a la proxima semana",
        "mejor otro dia", "se puede a las 11 mejor", "tengo que cambiar la fecha", "reprogramar por favor",
        "la podemos dejar para el sabado", "me la puede mover", "se puede mas tempranito?",
        "no podre el jueves, el lunes?", "pospongamos la cita", "adelantar la cita se puede?",
        "puedo ir el viernes en vez del jueves", "cambio de dia por favor", "en lugar del jueves el viernes",
        "quiero mover la cita", "se puede cambiar para el viernes", "puedo cambiar la hora", "necesito otro dia",
        "mejor el lunes", "me urge cambiar la cita", "podria ser mas tarde", "muevamela para el viernes",
        "otro dia por favor",
    ),
}  # fmt: skip

_IT = r"(?:it|that|this|them|mine|things|my \w+|the \w+|our \w+|my \w+ \w+|the \w+ \w+|us|me|\w+day(?:s)?)"
_WISH = phrases(
    r"(?<!up )(?<!it )(?<!back )(?:the )?(?:day (?:before|after)|(?:next|following) day)(?! (?:tomorrow|"
    r"yesterday))(?= (?:instead|would|"
    r"is|works?|please|better)|\Z|[.,?])",
    r"what (?:does|do|about) (?:\w+day|tomorrow|next week|the \d+\w*)(?: \w+)? look(?:ing)? like",
    r"(?:put|stick|pencil) (?:me|us) (?:on|in|down|for) (?:for |on )?\w+day",
    r"(?:can|could|may|is it ok if|can we|could we) (?:i|we) (?:\w+ )?(?:do|make it|come|bring it|say|try|"
    r"get) (?:\w+ ){0,3}(?:that day|same day|instead|earlier|later|not)",
    r"(?:can|could) (?:i|we) (?:switch|swap|change|move)(?: \w+)?",
    r"different (?:time|day)",
    r"rain check",
    r"same (?:time|hour|thing)(?: \w+)? (?:\w+day|tomorrow|next)",
    r"(?:\w+day|tomorrow|tmr) (?:same|at the same) (?:time|hour)",
    r"(?:is|are|isnt|was) (?:bad|no good|not good|rough|tough)(?: now| for me| after all)?",
    r"cambi\w* (?:me |nos |de |la |el |mi )*(?:cita|hora|dia|fecha|turno|horario)",
    r"(?:me|nos) (?:la|lo) (?:puede[ns]? |podria[ns]? )?(?:pasan?|pasar|cambian?|cambiar|mueven?|mueve|"
    r"mover|deja|dejan|dejar)",
    r"(?:pasel|pasenl|pasemel|muevel|cambiel|dejel|pongal)[ao]s? (?:\w+ )?(?:para|al|el|a las)",
    r"(?:dejarla|ponerla|cambiarla|moverla|pasarla) (?:para|al|el)",
    r"mas tempran\w+",
    r"(?:tengo que|necesito|quiero|voy a|puedo) (?:cambi|mov|reprogram|reagend|pospon)\w+",
    r"re ?-?sched\w*",
    r"rebook\w*",
    rf"(?:move|moving|switch|push|bump|swap|postpone|shift|change|changing|delay|slide|kick|"
    rf"pull|scoot) {_IT}",
    rf"bring {_IT} (?:forward|back to|up to|up an?|in (?:earlier|later|sooner)|earlier|later|sooner)",
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
    r"(?:cambi|muev|mov|pospon|aplaz|recorr|reprogram|reagend|adelant|atras)\w*(?:mela|melo|la|lo|nla|nlo)",
    r"pas(?:e|a|en)(?:me|n?me)?l[ao] (?:pa|para|al?|el)",
    r"(?:busqu|busc|d)\w*(?:me|nme|eme) otr[oa] (?:hueco|campo|espacio|hora|dia|lugar)",
    r"(?:habra|hay) (?:forma|manera|chance|modo) de (?:que )?(?:\w+ ){0,2}(?:antes|despues|cambi\w+|mov\w+)",
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
    r"no (?:es necesario|hace falta|hay que|tiene[ns]? que|necesito) (?:cambi|mov)\w+",
    r"(?:cambi|muev|mov)\w*(?:la|lo) (?:llanta|bateria|aceite|balatas|frenos|filtro)\w*",
    r"change (?:my|the) (?:oil|tires?|brakes?|pads?|filter|battery|wipers?|mind|number|fluid|belt|plugs)",
)


def holds(said: Said) -> bool:
    """Whether the standing booking is to be changed."""
    return said.has_booking and speaks_of_moving(said.text)


def speaks_of_moving(plain: str) -> bool:
    """Whether a plain text speaks of another time, whether or not a booking stands."""
    return bool(_WISH.search(_NO_WISH.sub(" ", plain)))
