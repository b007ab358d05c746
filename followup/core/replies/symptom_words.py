"""The words in which customers report what may be unsafe, in both languages, by the part of the car.

Each line is a regular expression; all are of the kind that must not be driven on. The others: `symptom_words_today.py`.
"""

from __future__ import annotations

PEDAL = r"(?:pedals?|brakes?|breaks?|clutch|pedal del freno|frenos?|bre[ck]+as?)"
FLAT = (
    r"flat(?: tire| tyre)?s?(?! (?:rate|fee|price|out|tow|bed|top|screen|charge|"
    r"tire repair place))",
    r"(?:tire|tyre|wheel)s? (?:is |was |just |has |looks |are |went |goes |keeps going |totally |"
    r"completely )*(?:flat|blown|busted|blew|popped|shredded|gone down)",
    r"(?:tire|tyre) (?:blew|popped|burst|exploded)",
    r"(?:tire|tyre|wheel)s? (?:\w+ ){0,3}(?:pancaked?|a pancake|deflated|squashed|airless)(?! (?:for|breakfast))",
    r"no air (?:left |at all )?in (?:the|my|one|that) (?:\w+ ){0,2}(?:tire|tyre|wheel|left|right|front|rear|back|one)",
    r"blow ?out",
    r"blew (?:a|my|the|out)(?: \w+)? (?:tire|tyre)",
    r"puncture[ds]?",
    r"(?:nail|screw|bolt|glass) in (?:my|the|a|one|it|tire|one of)",
    r"(?:llanta|neumatico|goma|rueda|cubierta)s? (?:\w+ ){0,3}(?:baja|bajas|ponchad\w*|pinchad\w*|"
    r"reventad\w*|desinflad\w*|en el piso|en el suelo|vacia|sin aire|trae un clavo|con un clavo)",
    r"(?:se (?:me )?)?(?:poncho|pincho|revento|desinflo|bajo) (?:la|una|mi) (?:llanta|goma|rueda)",
    r"ponchadura",
    r"pinchazo",
    r"ponche (?:una|la) llanta",
    r"clavo en la (?:llanta|goma|rueda)",
    r"se me (?:poncho|pincho|revento)",
    r"(?:tire|tyre)s? (?:is |are |keeps? |was )*(?:losing|loosing|leaking) air",
    r"(?:llanta|goma) (?:\w+ ){0,2}(?:pierde|perdiendo|tira) aire",
)
BULGE = (
    r"(?:chipote|bola|chichon|bulto|globo|burbuja|hernia) (?:\w+ ){0,3}(?:llanta|goma|rueda)",
    r"bulg(?:e|es|ing)",
    r"bubble (?:on|in) (?:\w+ ){0,4}(?:tire|tyre|sidewall)",
    r"(?:tire|sidewall|tyre) (?:\w+ ){0,3}bubble",
    r"cords? (?:are |is )?(?:showing|visible|exposed|sticking)",
    r"(?:see|seeing) (?:the )?(?:cords?|wires?|metal|steel)",
    r"(?:wires?|steel|metal) (?:\w+ ){0,3}(?:showing|sticking out|poking out|out of the tire)",
    r"chichon",
    r"bola en la llanta",
    r"llanta (?:\w+ ){0,3}(?:bola|chipote|alambres|inflamada|globo|bulto)",
    r"(?:se )?(?:le )?(?:ven|salen|asoman) (?:los |las )?(?:alambres|cuerdas|fierros)",
    r"bulto en (?:la|una) llanta",
)
BRAKES = (
    r"cant get (?:it|the car|her|my car|this thing) to stop",
    r"without pumping",
    r"se (?:me |le )?(?:fue|fueron|acabo) (?:el |los )?(?:frenos?|pedal)",
    r"pedals? (?:\w+ ){0,5}floor",
    r"(?:hits?|hitting|goes|going|drops?|sinks?|presses?|pushing|push) (?:\w+ ){0,4}to the floor",
    r"(?:push|pushing|press|pressing|stomp|stomping|step|stepping|slam|slammed|mash|stand) (?:\w+ "
    r"){0,3}(?:pedal|brakes?) (?:\w+ ){0,4}(?:to stop|twice|hard|harder|all the way|really|down|a lot)",
    r"brakes? (?:are |is |just |almost |completely |totally )+(?:going|toast|trash|useless|dead|done for|"
    r"junk)",
    r"hard to stop",
    r"no (?:me |le )?(?:agarran?|responden?|sirven?|funcionan?|jalan?) (?:\w+ ){0,3}(?:frenos?|pedal|"
    r"brecas)",
    r"se (?:me |le )?(?:acabaron|fueron|gastaron|murieron) (?:\w+ )?(?:los |las )?(?:frenos|balatas|"
    r"brecas)",
    r"(?:frenos?|balatas|brecas) (?:\w+ ){0,4}(?:baj[oa]s?|acabad[oa]s?|en el fierro|metal con metal|"
    r"truenan|rechinan)",
    r"ya no (?:frenan?|para|agarran?)",
    r"(?:brinca|salta|pulsa|golpea|rebota|tiembla) (?:\w+ ){0,2}(?:pedal|freno)",
    r"(?:pedal|freno) (?:\w+ ){0,2}(?:brinca|salta|pulsa|golpea|rebota|tiembla)",
    r"(?:wont|cant|doesnt|dont|didnt|barely|hardly|not|couldnt|almost didnt|almost couldnt|"
    r"nearly didnt|can barely|wouldnt|trouble|hard time) (?:\w+ )?(?:stop(?:ping)?|brak(?:e|"
    r"ing))(?! (?:by|in|over|at|and|texting|to|for|sending|calling|messaging|all\b|them\b|me\b|"
    r"those\b|everything|the (?:text|mess|remind|alert|notif)))",
    r"cant stop in time",
    r"(?:cant|couldnt|barely|hardly|wont|not) (?:\w+ )?stop in (?:time|the)",
    r"no brakes?(?! (?:job|problem|issue|pads? (?:need|today)|work|service|check|fluid))",
    r"(?:lost|losing|without) (?:my |the |all )?brak(?:e|es|ing)",
    PEDAL + r" (?:\w+ ){0,4}(?:soft|spongy|sinks?|sinking|mushy|squishy|to the floor|goes down|went down|"
    r"on the floor|fail(?:ed|ing|s|ure)?|gave out|went out|not working|dont work|doesnt work|"
    r"arent working|isnt working|wont work|no funcionan?|hundid[oa]|se hunde|se va (?:al|hasta)|"
    r"hasta el (?:fondo|piso|suelo)|suaves?|esponjos[oa]s?|floj[oa]s?|bland[oa]s?|fallan?|fallaron|larg[oa]s?|"
    r"no responden?|no agarran?|no sirven?)",
    r"(?:soft|spongy|mushy|sinking|squishy|weak|bad|failing|failed|squishy) (?:\w+ )?" + PEDAL,
    r"brakes? (?:\w+ ){0,4}(?:weak|bad(?:ly)?|worse|going out|gone|shot|giving out|fading|faded|"
    r"barely|hardly|sticking|stuck|locking|locked|feels? (?:weird|funny|off|different|wrong)|"
    r"feel(?:ing)? (?:weird|funny|off|different|wrong)|acting up|not (?:right|good|great))",
    r"takes? (?:\w+ ){0,3}(?:longer|forever|long|longer) to (?:stop|brake)",
    r"pump (?:the|my) (?:brakes?|pedal)",
    r"pumping (?:the|my) brakes?",
    r"no (?:\w+ )?(?:para|frena|frenan|paro|freno)(?: (?:bien|nada|igual|a tiempo|como))",
    r"no (?:me )?(?:frena|frenan|freno bien)",
    r"no para(?: el (?:carro|coche|auto)| bien)",
    r"(?:sin|no tengo|me quede sin|no hay|no trae) frenos",
    r"casi no (?:frena|frenan|para)",
    r"(?:fallan?|fallaron|fallando|se fueron|perdi) (?:los )?frenos",
    r"tarda (?:mucho )?en (?:frenar|parar)",
    r"no (?:puedo|alcanza a|alcanzo a) (?:frenar|parar)(?! (?:por ahi|los mensajes|a verlos))",
    r"se (?:hunde|va) el (?:pedal|freno)",
    r"el pedal (?:se va|se hunde|esta)",
    r"frenos? (?:\w+ ){0,3}(?:mal|raros?|peor|debil(?:es)?|largos?|blandos?|suaves?|duros?|flojos?)",
    r"frena (?:mal|raro|poco)",
)
STEERING = (
    r"steering (?:wheel )?(?:\w+ ){0,4}(?:tight|rough|crooked|off center|jerk\w*|pulls?|sloppy|clunk\w*|"
    r"grind\w*|not straight|hard|stiff|whin\w*)",
    r"wheels? (?:\w+ ){0,6}(?:fall off|falling off|come off|coming off|loose|wobbl\w+)",
    r"(?:ruedas?|llantas?) (?:\w+ ){0,2}(?:se mueven? mucho|se (?:va|quiere) (?:a )?(?:caer|salir|zafar)|"
    r"zafad\w*)",
    r"(?:dur[oa]|pesad[oa]|floj[oa]|rar[oa]|trabad[oa]) (?:\w+ )?(?:la direccion|el volante)",
    r"steering (?:\w+ ){0,3}(?:failed|gone|locked|locks?|stiff|heavy|hard|weird|loose|weak|"
    r"shak\w+|wobbl\w+|vibrat\w+|not working|wont|doesnt|stuck|off|funny|play|issue|problem)",
    r"(?:lost|no|hard|stiff|loose|heavy|hard to) (?:power )?(?:steering|steer)",
    r"cant steer",
    r"hard to turn",
    r"(?:direccion|volante) (?:\w+ ){0,3}(?:dur[oa]|pesad[oa]|floj[oa]|rar[oa]|trabad[oa]|fallo|falla|"
    r"bloquead[oa]|rar[oa]|no responde)",
    r"(?:se (?:me )?)?(?:trabo|bloqueo|endurecio) (?:la direccion|el volante)",
    r"wheel (?:\w+ ){0,3}(?:loose|wobbl\w+|fell off|falling off|coming off|came off)",
    r"wobbl(?:e|es|ing|y)",
    r"ruedas? (?:\w+ ){0,2}(?:flojas?|sueltas?|se mueve|baila\w*)",
    r"llantas? (?:\w+ ){0,2}(?:flojas?|sueltas?|baila\w*|se mueve)",
    r"lug nuts? (?:\w+ ){0,3}(?:loose|missing|fell|broke\w*)",
    r"bambole\w+",
    r"loose wheel",
)
HEAT = (
    r"gauge (?:\w+ ){0,4}(?:hot|high|red|pegged|maxed|way up|climbing|past|in the red)",
    r"(?:needle|temp\w*|gauge) (?:\w+ ){0,3}(?:in|into|at) the red",
    r"(?:smell|smelling|smells) (?:\w+ ){0,3}(?:gas|fuel|smoke|burn\w*)",
    r"smok(?:e|es|ing|ed)(?! (?:break|shop|check|free))",
    r"on fire",
    r"(?:caught|catch(?:ing)?) fire",
    r"flames?",
    r"fires?(?! (?:station|dept|department|drill|hydrant|away))",
    r"overheat(?:s|ed|ing)?",
    r"over heat(?:s|ed|ing)?",
    r"running hot",
    r"steam(?:ing)?",
    r"(?:temp(?:erature)?|heat) (?:gauge |light |needle |is |was |went )+(?:\w+ ){0,2}"
    r"(?:red|high|up|on|hot|pegged|maxed)",
    r"(?:smell(?:s|ing|ed)?|odor|stinks?|reeks) (?:\w+ ){0,4}(?:gas(?:oline)?|fuel|burn(?:ing|t|"
    r"ed)?|petrol|rubber|smoke|hot|exhaust|rotten|sweet|electrical)",
    r"(?:gas(?:oline)?|fuel|burn(?:ing|t|ed)?|petrol|rubber|exhaust|electrical|"
    r"rotten egg) (?:smell|odor|stink)s?",
    r"(?:fuel|gas) leak(?:ing|s)?",
    r"leaking (?:gas|fuel|gasoline)",
    r"burning (?:oil|rubber|smell|up|plastic)",
    r"humo",
    r"humea(?:ndo)?",
    r"ech(?:a|ando) humo",
    r"incendi\w+",
    r"fuego",
    r"llamas(?! a)",
    r"se (?:esta )?(?:quema|quemo|calienta|calento|calentando|sobrecalienta|sobrecalento)",
    r"(?:re|sobre)?calent(?:ando|amiento)",
    r"se (?:me )?(?:sobre|re)?(?:calienta|calento)",
    r"hue?le (?:\w+ ){0,3}(?:a |como )?(?:quemad[oa]|gasolina|gas|humo|caucho|hule|plastico|"
    r"aceite)",
    r"olor (?:\w+ ){0,3}(?:quemad[oa]|gasolina|gas|humo|caucho|hule)",
    r"temperatura (?:\w+ ){0,3}(?:alta|roj[oa]|sub\w+|arriba|al tope)",
    r"vapor",
)
LAMPS = (
    r"(?:red|yellow|orange|warning) triangle",
    r"triangulo (?:rojo|amarillo)",
    r"(?:red|rojo) (?:\w+ ){0,3}(?:light|lamp|warning|symbol)",
    r"(?:brake|oil(?: pressure)?|temp(?:erature)?|airbag|air bag|srs) (?:warning )?(?:light|lamp|"
    r"symbol|icon)(?: \w+){0,3}",
    r"(?:luz|foco|testigo) (?:\w+ ){0,4}(?:roj[oa]|aceite|temperatura|frenos?|airbag|"
    r"bolsas? de aire)",
    r"(?:flashing|blinking) (?:\w+ ){0,3}(?:light|engine|cel)",
    r"(?:light|engine light|cel|check engine)(?: light)? (?:\w+ ){0,3}(?:flashing|blinking|"
    r"flashes|blinks)",
    r"(?:parpade\w+|intermitente|titila\w*)",
    r"air ?bags?(?! recall)",
    r"oil pressure",
    r"bolsas? de aire",
)
