"""More reports that are a phrase: what goes on or came back, towing, air, light and oil, comparisons; both "
"languages."""

from __future__ import annotations

import re

_IT = r"(?:it|she|he|car|truck|van|thing|this thing|front end|rear end|back end|jeep|suv)"
_PULLS = (
    r"(?:pulls?|shakes?|shimmies|vibrates?|wobbles?|grinds?|squeals?|squeaks?|leaks?|drips?|smokes?|stalls?|hesitates?|"
    r"jerks?|bucks|surges|sputters?|coughs|hiccups|stutters|misfires|overheats|knocks|clunks|rattles|whines|hums|slips|"
    r"drifts|wanders|thumps|clicks|ticks|buzzes|hisses|groans|creaks|trembles|shudders|lurches|burps|chokes|wheezes|"
    r"burbles)"
)
_SIGUE = r"(?:sigue|siguen|seguia|continua|continuan|anda|andan|esta|estan|viene|vienen|va|van|quedo|quedaron)"
_HACIENDO = (
    r"(?:sonando|vibrando|temblando|brincando|tronando|rechinando|chillando|zumbando|tirando|goteando|calentando|"
    r"fallando|jaloneando|apagando|humeando|echando humo|oliendo|raspando|golpeando|perdiendo|patinando|cascabeleando|"
    r"tosiendo|pateando|retumbando|silbando|crujiendo|prendiendo y apagando|recalentando|desinflando|ponchando|"
    r"jalando(?:se)? (?:para|pa|a la|hacia)|cargando(?:se)? (?:para|pa|a la|hacia)|chiflando|rugiendo|rozando|"
    r"traqueteando|pitando|"
    r"golpeteando|chirriando|gimiendo|chorreando|escurriendo|botando|sacudiendo|cabeceando|tironeando|bailando|"
    r"arrastrando|parpadeando|matraqueando|zangoloteando|roncando|rascando|derramando)(?:se|me|le|sele|seme)?"
)

NOW = (
    r"(?:took|takes|taking|needs?|needed|used) (?:me |it )?(?:\w+ ){0,3}(?:half|whole|two|a|forever|ages|twice|longer|"
    r"the)"
    r" (?:\w+ ){0,4}to stop(?! (?:texting|by))",
    r"(?:almost|nearly|barely) (?:didnt|couldnt|did not|could not) stop(?! (?:by|in(?! time)|texting))(?: \w+)?",
    r"(?:foot|pedal|leg|brake) (?:\w+ ){0,2}(?:all the way|clear|clean|straight|right) (?:down|to the)(?: \w+)?",
    r"(?:wont|doesnt|didnt|cant|not|dont|wouldnt|will not) (?:\w+ )?hold(?:ing)? (?:any |its |the |much )?(?:air|"
    r"pressure|"
    r"a charge|charge)",
    r"(?:hold|holds) no air|(?:no|ni) (?:\w+ )?(?:aguanta|guarda|sostiene|retiene|detiene|agarra) (?:el |la |nada de "
    r")?(?:aire|presion)",
    r"(?:se|se me|se le) (?:desinfla|baja|vacia|sale)n?(?: sol[oa])?(?: (?:la|una|mi|el) (?:llanta|goma|rueda|aire))",
    r"se (?:me |le )?desinfla(?: \w+)?",
    r"(?:se les? |le |ya se )(?:ven?|asoman?|mira|miran) (?:el |los |la |las )?(?:alambre|alambres|cuerda|cuerdas|"
    r"fierro|"
    r"fierros|lona|tela|malla)",
    r"(?:threads?|cords?|belts?|wire|wires|steel|mesh|fabric) (?:\w+ )?(?:showing|visible|coming through|poking|"
    r"hanging|exposed)"
    r"(?: \w+)?",
    r"(?:took|takes|taking) off (?:all )?(?:on (?:its|it is) own|by itself|without me)",
    r"ya ni (?:frena|para|agarra|jala|camina|responde)n?",
    r"(?:brakes?|steering|pedal|frenos?|direccion) (?:\w+ ){0,3}(?:just as bad|as bad as|igual de mal\w*|siguen? "
    r"(?:igual|mal\w*|"
    r"peor)|no better|same as before|worse than)(?: \w+)?",
    r"sigu?en? (?:igual de )?(?:mal|mal[oa]s?|peor|igual) (?:de )?(?:el |la |los |las )?(?:frenos?|direccion|volante|"
    r"llantas?)",
    r"(?:brakes?|power steering|steering|pedal) (?:just |both |all )?(?:went|gave up|said goodbye|quit|vanished)"
    r"(?=\Z|[,.!]| (?:on|while|when|at|as|coming|going|out|completely|soft|in|and|again)\b)",
    r"(?:smoke|steam|humo|vapor) (?:coming|pouring|rolling|saliendo)(?: \w+)?",
)
TODAY = (
    rf"(?:{_IT}) (?:really |just |kinda |always |sometimes |also |now |often )?{_PULLS}(?=\Z|[,.!;?]| (?:when|if|at|"
    rf"on|in|a|so|"
    r"now|again|every|sometimes|bad|badly|like|and|worse|more|harder|to|going|under|all|the whole)\b)"
    r"(?! to my| more than a horse| a (?:boat|trailer|camper|crowd))",
    rf"(?:still|also|now|again) (?:really |kinda )?(?:{_PULLS}|pulling|shaking|leaking|smoking|squealing|grinding|"
    rf"stalling|"
    r"vibrating|wobbling|overheating|clunking|dripping|jerking)(?! my)(?=\Z|[,.!;?]| (?:when|if|at|on|in|to|a|so|now|"
    r"like|"
    r"and|bad|after|even)\b)",
    rf"{_PULLS} (?:worse|harder|more|louder) than (?:ever|before|last|it|when)(?: \w+)?",
    r"(?:hums?|whines?|roars?|growls?|buzzes|whistles|howls|drones) (?:\w+ )?(?:louder|more|higher)(?: \w+)?",
    # what came back, what leaves one stranded
    r"(?:started|starts|ran|cranked|fired) (?:\w+ ){0,2}once (?:\w+ ){0,2}(?:and|then|but)(?: then)? (?:never|not|"
    r"nothing|no more)"
    r"(?: again)?",
    r"(?:totally|completely|stone|all|plain|just|still|is|stays?|deader|dead) dead(?: (?:this|in|on|again|when|since|"
    r"as))(?: \w+)?"
    r"(?! (?:tired|end|line|serious|set|center))",
    r"dead as a (?:door ?nail|rock|brick|stone|dodo)(?: \w+)?",
    r"(?:on|onto) (?:the (?:back|bed|hook) of )?(?:a |the |another )?(?:\w+ )?(?:wrecker|flatbed|flat bed|rollback|"
    r"tow truck|hook|"
    r"tow)(?= |\Z|[.,!])(?! (?:business|lot|yard|company))(?! is (?:blocking|in))",
    r"(?:me|nos|la|lo) (?:\w+ ){0,3}(?:dejo|deja|dejaba|dejando|dejar|dejado|quede|quedamos|quedo) (?:\w+ )?(?:tirad|"
    r"botad|varad|parad)[oa]s?(?! (?:con la cita|esperando|en (?:el|la) (?:trafico|fila)))",
    r"(?:viene|llega|llego|va|voy|esta|traen|llevan?|llegara) (?:\w+ )?(?:en|con) (?:una |la )?grua(?! (?:adelante|"
    r"enfrente))",
    r"(?:(?<!se )lo|(?<!se )la|me lo|me la) (?:\w+ )?(?:lleva|trae|llevo|trajo|llevaron|trajeron|esta llevando) (?:la "
    r"|una )grua",
    r"grua (?:\w+ ){0,3}(?:lleva|tra[ei]|arrastr|remolc)\w*(?! tu| su)",
    r"(?:car|truck|van|she|jeep|engine|motor|it) is (?:\w+ )?(?:sick|limping|crawling|unwell|dying)(?=\Z|[,.!])",
    r"(?:esta|se quedo|amanecio|anda|quedo|ya) (?:\w+ )?muert[oa] (?:el |la |mi )?(?:carro|coche|troca|camioneta|auto|"
    r"motor|bateria|"
    r"pila)?",
    r"no (?:quiere|hace|da|quizo|quiso) (?:ni )?(?:siquiera )?(?:hacer |dar )?(?:ni )?(?:clic|click|marcha|el intento)",
    r"no hace nada (?:\w+ )?(?:cuando|al|si) (?:\w+ ){0,3}(?:doy|darle|giro|llave|prend\w+|encend\w+|pis\w+|"
    r"acel\w+)(?: \w+)?",
    r"(?:ya )?ni (?:prende|arranca|enciende|da marcha|camina|anda|avanza|se mueve|quiere prender)(?: \w+)?",
    # what goes on, in Spanish
    rf"{_SIGUE} (?:\w+ )?(?<!la )(?<!me ){_HACIENDO}(?! (?:bien|parejo|chido|al cien|musica|el (?:claxon|radio)|cita))",
    r"^\W*(?:ahora |ya |pues |es que |tambien |y )?(?:tose|jalonea|tironea|cabecea|humea|gotea|vibra|tiembla|brinca|"
    r"truena|"
    r"rechina|chilla|zumba|cruje|raspa|silba|cascabelea|patina|se jalonea|se apaga|se ahoga)(?:n)?(?=\Z|[,.!]| (?:al|"
    r"cuando|mucho|"
    r"feo|todo|algo|bien|en|por|de|y|un|como|desde|si|cada|muy|horrible|bastante)\b)(?! (?:de gusto|de alegria|bonito|"
    r"de risa))",
    r"(?:da|daba|dando|pega|pegaba|pegando|mete) (?:\w+ )?(?:tirones|jalones|brincos|saltos|patadas|cabezazos|"
    r"sacudidas|"
    r"tironazos|jaloncitos)",
    r"algo (?:trae|tiene|anda mal|esta mal|le pasa|suena|truena|huele|roza|cuelga|gotea|se solto|se cayo|no anda bien)"
    r"(?! (?:de|para|que ver|pendiente|mas|planeado))(?: \w+)?",
    r"(?:no|ya no|casi no|apenas) (?:\w+ )?(?:sube|avanza|levanta|camina|acelera)(?=\Z|[,.!]| (?:la|las|en|nada|mas|ni|"
    r"bien|igual|para|cuando|como)\b)(?! (?:la cita|el precio|el aire|los precios))",
    r"(?:es|sera|seria|esta) normal que (?!tard|cuest|cobr|me |les |no me|manden|se tarden|dur)(?:\w+ ){0,2}\w+",
    r"(?:is|isnt) it (?:normal|supposed|bad) (?:that|for|if|when|to) (?:it|my|the (?:car|truck|brakes?|engine|pedal|"
    r"wheel|light))"
    r"(?! (?:to )?(?:take|cost|be (?:done|late|ready)|is (?:late|after)))(?: \w+){1,3}",
    r"(?:coffee|water|drink|soda|cup|mirror|mirrors) (?:\w+ )?(?:ripples?|shakes|shaking|vibrates|dances|rattles)(?: "
    r"\w+)?",
    # lights
    r"(?:check engine|engine|oil|brake|brakes|battery|temp\w*|coolant|airbag|abs|traction|tire|tyre|tpms|warning|"
    r"pressure|dash) "
    r"(?:\w+ )?(?:lights?|lamps?|symbol)s? (?:is |are |has been |have been |just |still |keeps? |back |came |come |"
    r"comes |was )*"
    r"(?:on|lit|flashing|blinking|back|glowing|up)(?! (?:already|so) (?:fixed|reset))",
    r"(?:check )?engine(?: light)? (?:is |just |keeps |started |now )*(?:flashing|blinking|lit|flickering|pulsing)",
    r"(?:lights?|headlights?|head lights?|brights|dash) (?:\w+ )?(?:keeps?|kept|keep on|started|getting|get|go|going|"
    r"are|is) (?:\w+ )?"
    r"(?:dimming|dim|flickering|fading|blinking|cutting out|going out|going dim)(?: \w+)?",
    r"(?:luces|focos|faros|focos de \w+) (?:\w+ ){0,4}(?:bajit[oa]s?|baj[oa]s|debil\w*|tenue\w*|opac[oa]s|se apagan|"
    r"se van|medi[oa] "
    r"apagad\w+|suben y bajan)(?: \w+)?",
    r"no (?:me )?(?:sirven|prenden|jalan|funcionan|encienden|alumbran) (?:\w+ )?(?:los |las |ni )?(?:focos|luces|faros|"
    r"direccionales|cuartos|calaveras|intermitentes|limpiadores|frenos)",
    r"(?:got|get|getting|have|see|there is|showing|threw|throwing|shows) (?:\w+ ){0,2}(?:warning|message|alert|"
    r"code)s? (?:\w+ ){0,3}"
    r"(?:on (?:the|my) (?:dash|screen|cluster|display)|exclamation|horseshoe|with a)(?: \w+)?",
    # oil, water
    r"(?:vi|hay|encontre|dejo|deja|habia|amanecio|veo|tiene|halle|note) (?:\w+ ){0,2}(?:aceite|anticongelante|liquido|"
    r"charco|charquito|"
    r"mancha|manchas|gotas|agua) (?:\w+ ){0,6}(?:abajo|debajo|cochera|piso|suelo|motor|parte de abajo|banqueta|"
    r"estacionamiento|"
    r"garaje|donde (?:lo )?(?:estaciono|paro|parqueo))",
    r"(?:oil|fluid|coolant|drip|wet|water|transmission fluid|red|dark|black) (?:\w+ )?(?:spots?|marks?|drops?|"
    r"patch(?:es)?|rings?) "
    r"(?:\w+ ){0,3}(?:driveway|garage|floor|carport|ground|street|where i park|under)(?: \w+)?",
    r"(?:le falta|se le acaba|se le va|le echo|se acaba|se consume|hay que echarle|tengo que echarle|le pongo) (?:\w+ "
    r"){0,3}(?:aceite|"
    r"agua|coolant|anticongelante|liquido)(?: \w+){0,2} (?:cada|a cada|diario|seguido|todos los|otra vez)(?: \w+)?",
    r"(?:se le acaba|se le va|se acaba|hay que echarle|tengo que echarle) cada (?:\w+ )(?:el |la )?(?:aceite|agua|"
    r"coolant|"
    r"anticongelante|liquido)",
    r"bone dry (?:on|when)(?: \w+)?",
    # parts that come loose
    r"(?:something|plastic|metal|thing|piece|cover|shield|part|bit|splash guard|skirt|flap) (?:\w+ )?(?:dragging|"
    r"hanging|"
    r"flapping|dangling|scraping|rubbing|falling off|came loose|loose)(?: \w+)?",
    r"(?:doors?|hood|trunk|hatch|tailgate|liftgate) (?:\w+ )?(?:flies|flew|swings|swung|pops|popped|keeps popping|"
    r"comes) open(?: \w+)?",
    r"(?:left|right|driver|passenger|front|rear|back)(?: \w+)? (?:keeps|is|was|goes|went|going|gone|always) (?:\w+ "
    r")?(?:soft|flat|low|"
    r"mushy)(?= |\Z|[,.!])(?! (?:overnight shift|rate))",
    r"(?:freno|frenos|balata|balatas|pedal) (?:\w+ )?(?:rasgu\w+|rasga\w*|rozan?|raspa\w*|arana\w*|lima\w*|se "
    r"(?:siente|sienten) (?:hasta )?"
    r"(?:abajo|hondo|raro))",
    r"(?:escape|mofle|motor|carro|troca|muffler) (?:\w+ )?(?:va |viene |anda |esta )?(?:retumb|resuen|ronc|brama|"
    r"ruge)\w*",
    r"(?:feels?|like) (?:\w+ ){0,2}(?:driving|riding) (?:over|on|through) (?:a |an |the |some )?(?!cloud|clouds|air|"
    r"glass|rails|"
    r"butter|silk)(?:\w+ )?\w+ (?:above|over|past|at|when|on|around)(?: \w+)?",
    r"(?:something|algo) (?:\w+ ){0,3}(?:goes|went|going|makes|hace) (?:a )?(?!well|on|wrong with (?:the )?(?:bill|"
    r"text)|right|away)"
    r"(?:clonk|clunk|clank|bang|pop|thud|tock|boing|ping|crunch|snap|tac|toc|clac|cloc|trac|crac|bum|pum)\w*",
    r"(?:crank\w*|click\w*) (?:and |n |& )+(?:crank\w*|click\w*)(?: \w+)?",
    r"(?:it )?click(?:s|ed|ing) (?:at me|and click\w*|a (?:bunch|lot|few)|like crazy|\d+ times)(?: \w+)?",
)

_OWNERS = (
    r"engine|light|tire|tyre|pedal|brake|wheel|car|truck|van|battery|belt|dash|radiator|exhaust|muffler|transmission|"
    r"tranny|"
    r"hood|steering|clutch|alternator|starter|trunk|axle|fan|horn|needle|gauge|temp|motor|rotor|caliper|bumper|door|"
    r"hose|"
    r"bearing|strut|mirror|windshield|headlight|taillight|blinker|bulb|coolant|oil|turbo|suspension|shifter|noise|"
    r"sound|smell"
)
_STATES = (
    r"on|off center|in the red|in red|dead|flat|gone|stuck|loose|soft|mushy|spongy|low|hot|red|broke|broken|cracked|"
    r"bad|shot|"
    r"weird|funny|stiff|hard|heavy|crooked|out|back|worse|bent|missing|hanging|dragging|going|getting|making|acting|"
    r"about to|"
    r"[a-z]{3,}ing|been|not|so|really|super|all|still|always|just|kinda|leaned|bulged|bald|split|torn|toast|fried|"
    r"slick|wobbly|noisy"
)
IS_CUT = re.compile(rf"\b({_OWNERS})s (?={_STATES}(?![a-z]))")
"""Where the apostrophe of `is` was dropped: `the engine's flashing`."""
