"""`where`: the customer asks where the shop is or when it is open."""

from __future__ import annotations

from followup.core.replies.said import Said, phrases

CODE = "where"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "where are you located", "whats ur address", "what time do u open", "are you open saturdays?",
        "what are your hours", "where r u", "how late r u open", "addy?", "u guys still by the mall",
        "what time u close", "open sunday?", "directions please", "are u closed on monday",
        "whats the address again", "how do i get there", "are you on main st", "where is the shop",
        "do u open early", "hours?", "send me ur location", "which exit is it", "where do i drop it off",
        "when do you open tomorrow", "r u open today", "are yall downtown", "where is your shop",
        "what's the address", "location?", "what time do you close today", "are you open now", "hours please",
        "where do i go", "how do i get to you", "are you guys open on the weekend", "what street",
        "do you open before 8", "send address", "address please", "what's your location", "you open today?",
        "what time do you guys open tomorrow", "are you guys on 5th street", "where yall at", "directions?",
        "are you closed sundays", "how far are you from downtown",
    ),
    "es": (
        "donde estan ubicados", "cual es la direccion", "a que hora abren", "abren los sabados?",
        "cual es su horario", "donde quedan", "mandeme la direccion", "en que calle estan", "estan abiertos hoy",
        "a que hora cierran", "como llego", "me pasa la ubicacion", "trabajan los domingos?", "donde es",
        "donde esta el taller", "abren temprano?", "hasta que hora estan", "su direccion porfa", "abren manana",
        "por donde estan", "que dias abren", "estan cerrados el lunes?", "siguen en el mismo lugar?", "horario?",
        "en que parte estan", "donde es el taller", "a que horas cierran", "direccion?", "me da la direccion",
        "donde estan", "abren hoy", "cual es la ubicacion", "mande direccion", "donde se ubican",
        "a que hora abren el sabado", "ya estan abiertos?", "hasta que hora abren", "por que rumbo estan",
        "que horario tienen", "cierran los domingos?",
    ),
}  # fmt: skip

_ASKS = phrases(
    r"(?:closing|opening|close|quitting|lock ?up) (?:time|hours?)(?: (?:today|tonight|tomorrow|on \w+|\w+days?))?\?",
    r"(?:you|yall)(?: guys)? (?:there|around|in|open|working) (?:on )?(?:weekends?|saturdays?|sundays?|"
    r"holidays?|late)(?=\?|\Z)",
    r"what time (?:do|are) the doors(?: \w+){0,2}",
    r"when do (?:you|yall)(?: guys)? (?:lock up|unlock)",
    r"(?:do|should|where do|can) i turn(?: \w+){0,3}",
    r"how late (?:are|do|r) (?:you|u|yall)(?: \w+){0,3}",
    r"where did (?:you|u|yall)(?: guys)? (?:move|go)(?: \w+)?",
    r"did (?:you|yall)(?: guys)? move(?=\?|\Z)",
    r"(?:what|whats|what is) the (?:street|house|building|suite|unit) (?:number|name)",
    r"are (?:you|u|yall)(?: guys)? the (?:shop|place|garage|building|one|\w+ building)(?: \w+){0,4}",
    r"(?:which|what) hours(?: on| are| do)?(?: \w+){0,3}",
    r"(?:do|are) (?:you|yall)(?: guys)? (?:work|around|there)(?: on)? (?:weekends?|saturdays?|sundays?)",
    r"^address(?: please| pls)?\Z",
    r"en (?:que|cual) (?:numero|calle|avenida|lado|sucursal|local)(?: \w+)?",
    r"cual (?:de las (?:dos )?)?(?:sucursal|sucursales|ubicacion|tienda)(?: \w+){0,3}",
    r"(?:estan|es|queda) (?:por|en|el de) (?:\w+ ){1,4}o (?:por|en|el de)\b",
    r"(?:por|en) que (?:rumbo|lado|calle|esquina)(?: \w+)?",
    r"what (?:town|city|area|neighborhood|state|part of town)(?: \w+){0,4}",
    r"donde (?:mero|exactamente|mismo)(?: \w+)?",
    r"^hours(?: please)?\Z",
    r"how (?:do|can) (?:i|we) (?:get|go|drive) (?:to|there)(?: \w+){0,2}",
    r"cuando (?:abren|cierran|estan abiertos)",
    r"(?:forget|forgot|dont (?:know|remember)|not sure|remind me|lost) where (?:your|the|you|u|yall)(?: "
    r"\w+){0,3}",
    r"(?:open|close) at \d+(?: \w+)? or \d+",
    r"(?:do|are) (?:you|u|yall) (?:guys )?(?:open|close)(?: \w+){0,5}",
    r"(?:are )?(?:you|yall|u) (?:guys )?(?:still )?(?:by|near|off|next to|across from|downtown|in the "
    r"same|at the same)(?: \w+){0,4}",
    r"(?:are )?(?:you|yall) (?:guys )?(?:in )?downtown",
    r"(?:which|what) (?:exit|side|end)\b(?: \w+)*",
    r"^directions(?: please)?\Z",
    r"(?:send|text|give|need|share) (?:me )?(?:the |your |ur )?(?:location|address|directions|pin|map)",
    r"(?:siguen|estan|sigue|esta) (?:\w+ )?en (?:el mismo|la misma|donde)(?: \w+){0,2}",
    r"(?:estan|esta) (?:abiert[oa]s?|cerrad[oa]s?)(?: \w+){0,4}\?",
    r"hasta que hora(?: \w+){0,2}",
    r"(?:mand\w+|pas\w+|envi\w+|comparta\w*) (?:la |su |tu )?(?:direccion|ubicacion|domicilio)",
    r"(?:tienen|hay) (?:servicio|horario) (?:los |el |en )?(?:sabados?|domingos?|fin)",
    r"where (?:are|is|r|do|you|exactly|at|yall|should|can|abouts|u|would|the)(?! (?:my (?:car|"
    r"keys|receipt)|the (?:noise|leak)))",
    r"^where\Z",
    r"where\?",
    r"(?:what|whats|your|ur|the|an?|shop|send|need|full|street|text me|give me|have|get|"
    r"got) (?:\w+ ){0,3}(?:address|location|directions|zip|cross streets?)(?! (?:changed|"
    r"is wrong))",
    r"^(?:address|location|directions|hours|horario|direccion|ubicacion|domicilio)\Z",
    r"(?:address|location|directions|hours)\?",
    r"(?:what|your|ur|shop|the|business|open|store|holiday|weekend|saturday|sunday|regular|"
    r"any) (?:\w+ ){0,3}hours(?= |\?|\Z|[.,])(?! (?:late|away|ago|from|later|earlier|drive|before|"
    r"to|will|would|for|do you need))",
    r"(?:what|wat) (?:time|times|days?|hours)(?: \w+){0,3} (?:open|close|closing|opening|"
    r"you there)",
    r"(?:when|how late|how early) (?:are|do|does|is|r|u|will|can|until are) (?:you|u|yall|it|"
    r"the shop|they|your shop)? ?(?:guys |all )?(?:open|close|opened|closed|closing|there|"
    r"stay open|be open)",
    r"(?:are|r|is|you|u|do|does|will|yall) (?:you|u|yall|it|the shop|they|ya|be|"
    r"your shop)? ?(?:guys |all |still |even |ever |be |folks )?(?:open|opened|closed|"
    r"close)(?! (?:to|for discussion))(?= |\?|\Z|[.,])",
    r"open (?:on |this |the )?(?:weekends?|saturdays?|sundays?|today|tomorrow|now|late|holidays?|"
    r"mondays?|labor day|memorial day|christmas eve)\??",
    r"(?:which|what) (?:location|shop|store|branch|part of town|street|city)(?! (?:is this|"
    r"are you with))",
    r"how (?:do|can) i (?:get|find) (?:there|you|the shop|it)",
    r"(?:how )?far (?:are|is) (?:you|it|that|the shop)",
    r"(?:are|r) (?:you|u|yall) (?:guys )?(?:still )?(?:located|on|off|by|near|at|next to|"
    r"in the) (?!the way|time|schedule|sale)\w+",
    r"(?:the one|shop|place) (?:on|off|by) \w+ (?:street|road|ave\w*|st|rd|blvd|hwy|highway)\?",
    r"your (?:opening|business) hours",
    r"donde(?! (?:sea|quiera|trabajo|vivo|pago|hace|suena|tira))(?= |\?|\Z)",
    r"(?:cual|que|la|su|mande\w*|tienen|tiene|pase\w*|una|me (?:da|dan|pasa|pasan|"
    r"manda)) (?:\w+ ){0,3}(?:direccion|ubicacion|domicilio)(?! (?:\w+ )?(?:dur[oa]|floja|falla|"
    r"asistida|hidraulica|trabada|pesada|del carro))",
    r"(?:direccion|ubicacion)\?",
    r"(?:a|hasta|desde) que horas? (?:\w+ )?(?:abren?|cierran?|estan?|atienden?|trabajan?|"
    r"puedo (?:ir|llegar|pasar)|hay servicio|reciben|empiezan)",
    r"que (?:horario|dias|horas) (?:\w+ )?(?:abren|tienen|trabajan|manejan|atienden|estan)",
    r"(?:horario|horarios)(?= |\?|\Z)(?! (?:de (?:trabajo|mi)|flexible|no me|esta|complicado))",
    r"(?:abren|cierran|trabajan|atienden|estan abiertos?|esta abierto|estan cerrados|abre|cierra|"
    r"abierto)(?: \w+){0,4}\?",
    r"abren (?:los |el |manana|hoy|en )\w*",
    r"(?:estan|esta) abiert[oa]s?",
    r"como (?:llego|llegar|le hago para llegar)",
    r"por donde (?:queda|estan|es)",
    r"(?:estan|siguen|quedan|andan) (?:\w+ )?(?:por|en|cerca de|sobre|frente a) (?:la |el )?\w+(?: \w+){0,3} "
    r"(?:todavia|o (?:ya )?"
    r"(?:se )?(?:cambiaron|movieron|mudaron))(?: \w+){0,3}",
    r"(?:ya )?se (?:cambiaron|mudaron|movieron) (?:de|a) (?:local|lugar|direccion|lado|otro lado|otra calle|domicilio)",
    r"en que (?:calle|parte|ciudad|lugar)",
    r"queda lejos",
)
_NO_QUESTION = phrases(
    r"direccion (?:\w+ ){0,3}(?:dur|pesad|suelt|floj|vibr|tiembl|jal|trab|rechin|truen|tron|rar)\w*",
    r"(?:no idea|dont know|no clue) (?:what|which) (?:shop|place|garage) (?:this|that|it) is",
    r"(?:tienen?|tendran?|hay|habra|tendrian?) (?:un lugar |algo )?(?:en )?donde (?:\w+ )?\w+[aei]r(?:me|nos|se|"
    r"lo)?(?: \w+){0,3}",
    r"(?:tru?en|tron|rechin|suen|son|vibr|zumb|cruj|golpe|tir|gote|trab|fall|floj|dur|sient|trae|jal|mueve|brinc)\w* "
    r"(?:\w+ ){0,2}(?:la |mi )?direccion",
    r"direccion (?:al |cuando |si )\w+",
    r"(?:before|after|until|till|right when|once) (?:you|u|yall) (?:guys |folks |all |people )?(?:are "
    r")?(?:open|opened|closed?)",
    r"when the doors open",
    r"get (?:it|her|him|them|this|that|the \w+|my \w+) to (?:you|u|ya|yall)",
    r"more like \d+",
    r"what (?:time|day|date) (?:was|is) (?:it|my|that|the (?:appointment|visit))(?: \w+){0,3}",
    r"cuando (?:es|era) mi cita",
    r"if (?:it is|its|that is|thats|they are) (?:still )?(?:open|available)",
    r"(?:\d+|one|two|three|four|half|couple|few|how many|an?) (?:\w+ )?hours",
    r"direccion (?:se |esta |anda )?(?:traba|atora|dura|floja|rara|pega|falla)\w*",
    r"trabajan? (?:en )?(?:motos?|transmisiones|diesel|aire|frenos|llantas|con)(?: \w+)?",
    r"de donde (?:me |nos )?(?:son|escriben|hablan|mandan|textean|eres|es|sac\w+|consigui\w+|obtuv\w+)(?: "
    r"\w+){0,3}",
    r"as soon as (?:you|u) (?:\w+ )?open",
    r"when (?:you|u|yall) (?:guys |all )?open(?!\?)",
    r"(?:before|after|until|till|right when|once) (?:you|u|yall) (?:guys )?(?:open|close)",
    r"(?:cuando|en cuanto|apenas|antes de que|tan pronto) (?:abran|abren|cierren|cierran)(?!\?)",
    r"(?:are|is) (?:there )?(?:any|anything|something) (?:\w+ )?open",
    r"(?:both|all|either|they|these|those|days?|times?|slots?|i|im|we|am|afternoons?|mornings?) (?:are |is |am "
    r")?(?:wide |all |still )?open "
    r"(?:for|to|on|with) (?:me|us|my end|our end)",
    r"(?:all|both) (?:of (?:them|those|these) )?(?:\d|two|three|four|times |slots |days )*(?: ?(?:of (?:them|"
    r"those) )?(?:are )?)"
    r"(?:wide )?open (?:for|to|on|with) (?:me|us)",
    r"(?:im|i am|we are|my (?:\w+ )?(?:day|schedule|calendar|afternoon|morning|week|\w+day)(?: is)?) (?:wide |all |"
    r"pretty |totally )?open\b",
    r"my hours",
    r"(?:mi|mis) (?:\w+ )?horarios?(?: de \w+)?",
    r"(?:entiendo|entiendi|confunden?|enred\w+) (?:\w+ ){0,4}horarios?",
    r"(?:from|in|for) (?:work|a few|\d+|two|three|four|five|six|(?:a )?couple(?: of)?) hours",
    r"what (?:do|times? do) you have open",
    r"(?:what|which) (?:days?|times?) (?:are|do you have) open",
    r"no se (?:por )?donde",
    r"where (?:i|im|the noise|it is coming)",
    r"is (?:it|that|tuesday|\w+day|\d+) open",
    r"is (?:the )?\d+ ?(?:am|pm)? (?:slot )?(?:still )?open",
)


def holds(said: Said) -> bool:
    """Whether the place or the opening hours are asked for."""
    return bool(_ASKS.search(_NO_QUESTION.sub(" ", said.text)))
