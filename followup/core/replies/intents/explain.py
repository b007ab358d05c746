"""`explain`: the customer asks what it is, why it matters or how bad it is."""

from __future__ import annotations

from followup.core.replies.said import Said, phrases

CODE = "explain"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "what is that?", "why do i need it", "how bad is it", "is it safe to drive?", "can it wait til spring?",
        "whats wrong w my brakes", "what would u be doing", "whats a cabin filter", "why", "which tires",
        "is it urgent", "how worn are they", "what happens if i dont", "do i really need that",
        "what does that mean", "is it bad", "how soon do i need it", "whats it for", "can i drive it like this",
        "what did u find", "how long can i go on these", "is this necessary", "ok to drive to vegas?",
        "will they last the winter", "dont understand what u mean", "what exactly needs done", "is it dangerous",
        "what for", "what's that mean", "why is that", "how serious is it", "is it dangerous to drive",
        "can i wait on it", "whats wrong with it", "what needs to be done", "what did you find",
        "do i have to do it now", "explain please", "what is brake fluid flush", "how much life is left on them",
        "is that bad", "which brakes front or back", "what is that service", "what do you mean by worn",
        "what's it do", "how do you know its bad", "how thin are the pads", "do i need all four",
        "why would i need that", "what happens if i wait", "could you tell me more", "what was the measurement",
        "how long before it fails", "is it a must", "what does the code mean", "are they really that bad",
        "how come", "whats the difference",
    ),
    "es": (
        "que es eso?", "por que es necesario", "que tan grave es", "puedo seguir manejando asi?",
        "que tienen mis frenos?", "para que sirve", "aguanta otro mes?", "cuales llantas", "que le pasa a mi carro",
        "es urgente?", "es peligroso", "que pasa si no lo hago", "de veras lo necesito?", "que quiere decir",
        "que tan gastados estan", "pa que es eso", "puede esperar?", "que le van a hacer", "por que",
        "no entiendo que es", "es necesario?", "puedo viajar asi", "que encontraron", "y eso que es",
        "cuanto mas me duran", "que tan malo esta", "que es un filtro de cabina", "que significa", "que tiene",
        "es peligroso manejar asi", "que le falta", "puedo esperar", "que es lo que tiene", "cual es el problema",
        "para que es", "que tan urgente es", "explicame", "de que trata", "que es ese servicio",
        "como saben que esta mal", "para que lo necesito", "cuanto les queda", "que pasa si espero",
        "me explica por favor", "de verdad estan tan mal", "por que tan pronto", "que fue lo que midieron",
        "es obligatorio?",
    ),
}  # fmt: skip

_ASKS = phrases(
    r"(?:h(?:o)?w) (?:bad|worn|far gone) (?:are|is) (?:they|it|the|these|those)(?: \w+)?",
    r"(?:am i|will i|are we|will we|would i) (?:going to |gonna |about to )?(?:break down|be stranded|get stranded|"
    r"get stuck|blow a tire|"
    r"have a blowout|crash|overheat|end up stranded)(?: \w+){0,3}",
    r"what (?:am i|are we|was i) (?:\w+ )?(?:coming|going|bringing|taking|dropping) (?:\w+ ){0,3}for(?: again)?",
    r"(?:is|are|does|do|can|could|will|would) (?:\w+ ){1,6}?(?:something that |really |actually |ever |going to |"
    r"able to )*"
    r"(?:kill|hurt|harm|damage|ruin|wreck|destroy|shorten)s? (?:the|an?|my|your|anything|something)(?: \w+)?",
    r"(?:is|are) (?:\w+ ){1,5}(?:bad for|hard on|dangerous for) (?:the|an?|my|your) \w+",
    r"is (?:it|that|this|she) (?:\w+ )?(?:due|overdue)(?: \w+){0,3}",
    r"should i (?:lose sleep|stress|fret)(?: \w+){0,3}",
    r"how worried(?: \w+){0,3}",
    r"what (?:am i|are we) (?:getting|having) (?:done|fixed|replaced|checked)(?: \w+)?",
    r"what (?:was|were|is|are) the (?:measurements?|readings?|numbers?|difference)(?: \w+)?",
    r"is (?:it|this|that) a must",
    r"^how come\Z",
    r"whats the difference",
    r"como (?:saben|sabe|se dieron cuenta)(?: \w+){0,4}",
    r"es (?:necesario|obligatorio) \w+(?: \w+){0,3}",
    r"(?:de verdad|en serio|tan) (?:\w+ ){0,2}(?:mal|malos|gastados)(?: \w+)?\??(?=\Z)",
    r"how (?:many|much) (?:mm|millimeters?|32nds|tread|pads?|brakes?|lining|material)(?: \w+){0,3} (?:left|remain\w*)",
    r"cuant[oa]s? (?:milimetros?|mm|balatas?|pastillas?|dibujo|banda)(?: \w+)? (?:quedan?|quedaban?|tien\w+)",
    r"(?:what (?:happens|if)|is it (?:bad|ok|okay|safe|dangerous)) (?:if |when |to )(?:i )?(?:just )?wait(?: \w+){0,4}",
    r"(?:y )?si (?:no )?(?:lo|la|los|las|sigo|me|se)\b[^.?!]*(?:pasa|pone peor|descompon|danar?|hace (?:dano|ruido)|"
    r"malo|hacer ruido)\w*",
    r"por que tan (?:pronto|caro|rapido)",
    r"que fue lo que(?: \w+){0,3}",
    r"que pasa si (?:espero|no)(?: \w+){0,3}",
    r"(?:is|are|will|would|could) (?:it|they|this|that|my \w+) (?:\w+ ){0,3}(?:break down|die|fail|leak|"
    r"overheat|stall|leave me stranded|blow up)(?: on me)?",
    r"do (?:they|these|those|it|my \w+|the \w+) (?:really |actually )?(?:need|have) (?:to|replac\w+|"
    r"chang\w+)(?: \w+){0,4}",
    r"how(?:s| is| are| do| does| did)? (?:it|they|the \w+|my \w+) (?:look|looks|looking)(?: \w+){0,3}",
    r"what (?:this|that|it) (?:is|was) for",
    r"(?:which|what) (?:brakes?|tires?|side|wheels?|filter|one|ones|axle)(?: \w+){0,3}(?=\Z|\?)",
    r"(?:de )?que (?:se )?trata",
    r"how (?:many|much) (?:more )?(?:miles|months|weeks|time|life|longer)(?: \w+){0,4} (?:get out|left|"
    r"out of|go|drive|last|have|before)(?: \w+){0,3}",
    r"que tanto (?:le |les )?(?:falta|queda|aguanta|dura)\w*(?: \w+){0,3}",
    r"(?:hay|habra|tendria) (?:bronca|problema|pedo|riesgo|peligro) (?:si|en|con)(?: \w+){0,5}",
    r"what did (?:the|your) (?:tech\w*|mechanic|guy|inspection|shop|report)(?: \w+){0,3}",
    r"what (?:would|will|do|are|did|were) (?:you|u|yall|they)(?: guys)? (?:be |going to |want to )?(?:do|"
    r"doing|find|found|fix|fixing|see|saw|recommend|checking|check)(?:ing)?(?! (?:charge|cost|open))(?: "
    r"\w+){0,3}",
    r"^which (?:\w+ )?(?:tires?|brakes?|filter|part|ones?|wheel|fluid|side|service|car)\Z",
    r"(?:will|would|can|could) (?:it|they|she|my \w+|the \w+) (?:\w+ )?(?:last|make it|survive|hold (?:up|"
    r"out))(?: \w+){0,4}",
    r"what (?:does|do|is) (?:\w+ ){0,2}\d+/\d+(?: \w+)?",
    r"how (?:low|thin|worn|bad|far gone) (?:is|are) (?:it|they|my|the)(?: \w+)?",
    r"(?:de veras|deveras|en verdad) (?:\w+ )?(?:necesit|ocup|hace falta|urge)\w*",
    r"no (?:entiendo|comprendo|se) (?:que|lo que|a que)(?: \w+){0,3}",
    r"que (?:encontraron|vieron|revisaron|le vieron|le encontraron|falta|le toca|necesita)(?: \w+)?",
    r"cuanto (?:mas )?(?:me |le |les )(?:dura|duran|queda|quedan|aguantan?)(?: \w+)?",
    r"(?:y )?eso que es",
    r"what (?:is|are|does|do|did|exactly|was|were|kind|needs?|else|all|work|service|"
    r"part)(?: \w+){0,5} (?:that|mean|wrong|it|this|for|due|issue|problem|involve\w*|include\w*|"
    r"about|needed|need|done|recommend\w*|find|found|fluid|filter|rotors?|pads?|belt|tread|"
    r"brakes?|tires?|see|matter|checked|say|report|inspection|fix\w*|going on|do)(?! (?:cost|"
    r"address|hours|price|location|time|number))",
    r"what (?:is|are) (?:a |an |the |my )?(?:\w+ )?(?:rotor|pad|tread|belt|fluid|filter|alignment|"
    r"rotation|strut|shock|bushing|tpms|coolant|cabin filter|inspection|service)s?",
    r"what (?:for|about|is (?:up|due|wrong|needed|the (?:problem|issue|matter|reason|deal))|"
    r"needs (?:doing|fixing|to be)|is it)",
    r"for what",
    r"what\?",
    r"^what\Z",
    r"^(?:but |and )?why\Z",
    r"why(?! (?:not|do you (?:keep|text)|are you (?:text|mess|bother|send|spam|contact)\w*|"
    r"am i getting|did i get|do you guys keep|do i keep|you (?:text|keep)\w*))(?: (?:is|does|do|"
    r"would|should|though|that|now|so|what|i|it|cant|this|again|what for|are|did|come|in)\b|\?|\Z)",
    r"how (?:bad|urgent|serious|important|worn|dangerous|critical|low|soon (?:do|should|"
    r"does) (?:i|it)|thin|severe|necessary|much (?:life|tread|pad|wear|is left|left|longer (?:do|"
    r"can|will) (?:i|it|they))|worried|long (?:can|do i have|have i|until i|before i|before it|"
    r"can i|is it safe|will (?:they|it|the \w+|my \w+) last|do (?:they|these) last))",
    r"is (?:it|this|that|there) (?:\w+ )?(?:safe|bad|serious|urgent|dangerous|necessary|"
    r"ok to (?:drive|wait)|important|needed|really|unsafe|an emergency|that bad|critical|"
    r"a (?:big deal|safety|problem|rush|recall)|something|worth)(?: \w+)*",
    r"(?:is|are) (?:it|they|this|my \w+|the \w+) (?:\w+ )?(?:safe|unsafe|dangerous|that bad|"
    r"really (?:bad|that|worn)|worn)",
    r"can (?:it|this|that|they|i) (?:\w+ )?(?:wait(?! (?:there|in|here|at|while|for (?:it|the)|"
    r"inside|on site))|still drive|keep driving|drive (?:it|on|with|like|to)|last|hold off|"
    r"hold out|make it)",
    r"(?:safe|ok) to (?:drive|wait|keep)",
    r"(?:will|would) (?:it|they|i|my \w+) (?:\w+ )?(?:last|make it|hold|be ok|be safe|fail|"
    r"pass inspection)",
    r"do (?:i|we|they|you think i) (?:really |actually |even |still )?(?:need|have) (?:it|this|"
    r"that|to (?:do|get|replace|change|fix|have|worry|come)|them|new|those|all)",
    r"does (?:it|that|this|the \w+|my \w+) (?:really |actually |even )?(?:need|have to|matter)",
    r"(?:what|whats) (?:happens|could happen|would happen|the risk|the worst)",
    r"should i (?:be )?(?:worr\w+|concerned|drive|stop|wait|do it|replace|panic|get)",
    r"(?:explain|tell me (?:more|about|what|why)|more (?:info|details?|information)|details\??|"
    r"elaborate|clarify|send (?:me )?(?:pictures?|photos?|pics?|the (?:report|inspection)))",
    r"(?:dont|didnt|do not) (?:understand|get it|get what|know what (?:that|this|it) (?:is|means))",
    r"what do you mean",
    r"meaning\?",
    r"(?:which|what) (?:tires?|brakes?|filter|part|one|wheel|fluid|side|service|ones)\?",
    r"(?:front|rear|both|all four|all 4)(?: or \w+)?\?",
    r"huh\?",
    r"come again\?",
    r"how (?:do|did|can) you (?:know|tell)",
    r"recall\?",
    r"que (?:es|son|significa|quiere decir|tiene|tienen|le (?:pasa|falta|hace falta|van a|toca|"
    r"encontraron|vieron)|paso con|le hacen|incluye|necesita|pasa si|pasaria si|le encontraron|"
    r"tengo que|servicio|ocupa|trabajo|hay que)(?! (?:precio|hora|costo|dia))(?: (?:eso|esto|el|"
    r"la|los|las|mi|mis|un|una)\b)?",
    r"que (?:tan|tanto) (?:grave|urgente|mal|malo|malos|mala|peligroso|serio|necesario|importante|"
    r"gastad\w+|seguro|desgastad\w+|pronto)",
    r"(?:es|son|esta|estan|seria) (?:\w+ )?(?:segur[oa]|peligros[oa]s?|grave|urgente|seri[oa]|"
    r"necesari[oa]|muy mal|malo|importante|de urgencia|obligatorio)\b(?=.*\?|\Z)",
    r"(?:se )?puede (?:esperar|aguantar|manejar|seguir)",
    r"puedo (?:\w+ )?(?:esperar(?! (?:ahi|alli|aqui|en))(?: \w+)?|manejar\w*|seguir|conducir|"
    r"andar|viajar|usar\w*|aguantar)",
    r"cuanto (?:tiempo )?(?:mas )?(?:aguant\w+|puedo esperar|tiempo (?:tengo|aguant\w+|puedo)|"
    r"le queda|les queda|duran)",
    r"(?<!^)aguant(?:a|an|ara|aria)(?!me|nme)\w*",
    r"^aguant(?:a|an|ara|aria)(?= (?:\w+ )*(?:\?|mas|otro|asi|hasta))",
    r"(?:para|por) ?que(?: (?:es|lo|la|se|sirve|necesit\w+|hay|tengo|ocupo|me|le|eso|los|las|esta|"
    r"son|no puede|dice|ahora|tan)\b|\?|\Z)",
    r"para que(?! (?:me|lo|la|le|les) (?:den|llev|arregl|revis|cheq|cambien|atiend)\w*)",
    r"(?:de verdad|realmente|en serio) (?:lo )?(?:necesit\w+|hace falta|ocup\w+)",
    r"(?:hay|corre|corro) (?:peligro|riesgo)",
    r"debo preocuparme",
    r"(?:expli(?!co\b|que que)\w+|cuenteme|digame (?:mas|que)|mas (?:informacion|detalles|info))",
    r"no (?:entiendo|entendi|se que es|comprendo)",
    r"como (?:que|asi)\??",
    r"a que se refier\w+",
    r"cual (?:es el problema|llanta|freno|servicio|filtro)",
    r"cuales (?:llantas|frenos|son)",
    r"de que (?:se trata|es|hablan|habla|cosa)",
    r"^que\?",
)
_OTHER_QUESTION = phrases(
    r"what(?: (?:is|does|will|would|do|am|are))?(?: (?:it|i|we|that|they|this|all))?(?: (?:gonna|going to|be))* "
    r"(?:come|comes|coming|add up|adds up) "
    r"(?:out )?to(?: \w+)*",
    r"what (?:am i|are we) (?:gonna |going to )?(?:be )?(?:payin|paying|spendin|spending|owing|owin)(?: \w+)*",
    r"(?<=\w )que es (?:mi|cuando|la hora|a la hora|el dia)(?: \w+){0,3}",
    r"(?<=\w )(?<!saber )(?<!se )(?<!dime )(?<!diga )(?<!digan )(?<!explica )(?<!entiendo )porque (?:\w+ )*\w+(?! ?\?)",
    r"(?:rather|can|will|could|prefer to|like to|let me|i) explain(?: \w+)?",
    r"what (?:is|are|would|does|s) (?:\w+ ){0,5}(?:cost|run|price|set me back)(?: \w+)?",
    r"what (?:\w+ ){0,8}(?:go|goes|going) for(?: \w+){0,3}",
    r"what (?:is|are|s) (?:for|we having for|cooking for) (?:dinner|supper|lunch|breakfast)(?: \w+)*",
    r"what (?:kind|sort|amount) of (?:money|cash|bill|number|dollars?)(?: \w+)*",
    r"is (?:it|this|that) (?:really |actually )?free",
    r"what (?:is|s) (?:that|it|this)(?: all)? (?:run|cost|going to (?:run|cost|be)|gonna (?:run|cost|be)|"
    r"total)(?: \w+)*",
    r"why not",
    r"porque no(?! (?:me|le|les|puedo|tengo|funciona|sirve))",
    r"what (?:is|are|was) (?:the |your |ur )?(?:address|hours?|location|cost|price|charge|fee|"
    r"phone|number|website|name|total|estimate|damage|quote|earliest|soonest|next|availab\w+|"
    r"open\w*|times?|days?)(?: \w+)*",
    r"what (?:time|day|days|times|hours|date|slots?|availability)(?: \w+)*",
    r"what (?:will|would|does|do) (?:\w+ ){0,3}(?:cost|charge|run|price)(?: \w+)*",
    r"what (?:shop|company|business|place|garage) (?:is this|are you)",
    r"what number",
    r"what about (?:\w+ )?(?:monday|tuesday|wednesday|thursday|friday|saturday|sunday|tomorrow|"
    r"next|the \d+|\d+|later|earlier|morning|afternoon|today|noon)",
    r"(?:que|a que|cual|cuales) (?:hora|horario|horarios|dia|dias|precio|costo|"
    r"direccion)s?(?: \w+)*",
    r"por que no\?",
    r"why (?:do|are|did|does) (?:you|u|yall|i) (?:\w+ )?(?:keep|texting|text|getting|messaging|"
    r"send|get|have my|bother\w*)(?: \w+)*",
    r"por que (?:me|siguen|tanto)(?: \w+)*",
    r"(?:is|are) (?:it|that|this|they) (?:\w+ )?(?:ok|okay|fine|alright|possible|good) (?:if|"
    r"to come|for|with|on|to (?:drop|bring|leave|wait in))(?: \w+)*",
    r"what do you (?:have|got|charge|need from)(?: \w+)*",
    r"what is (?:this|that) (?:number|about)\?*",
    r"what else do you have",
    r"how bad is the traffic",
    r"no matter what",
    r"guess what",
    r"whatever",
    r"porque (?:tengo|no|me|estoy|voy|ya|trabajo|mi|el|la|salgo|es|si)(?: \w+)*",
    r"(?:thats|that is|is) (?:exactly )?(?:why|what) i\w*",
    r"(?:you know|i know|know) what",
    r"what i (?:need|want)",
    r"can (?:it|this|we|i) wait (?:until|till) (?:next|\w+day)(?! \w*\?)",
    r"what you",
    r"can (?:i|we) make it (?!to\b|home|there|through|on)\w+",
)


def holds(said: Said) -> bool:
    """Whether an explanation or a judgment is asked for."""
    return bool(_ASKS.search(_OTHER_QUESTION.sub(" ", said.text)))
