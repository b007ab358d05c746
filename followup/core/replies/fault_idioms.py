"""Words of faults that are none: idioms, people and animals, traffic, other cars, the cabin, questions in general.

What is found here is blanked before a fault is looked for; the rest of the text may still report one.
"""

from __future__ import annotations

import re

from followup.core.replies.fault_spanish import SPANISH_IDIOMS
from followup.core.replies.said import phrases

_FOLK = (
    r"(?:neighbou?rs?|coworkers?|co workers?|friends?|buddys?|buddies|roommates?|bosss?|boss|rides?|sitters?|cousins?|"
    r"uncles?|aunts?|teachers?|landlords?|customers?|clients?|carpool|bus)"
)
_KIN = (
    r"(?:moms?|mothers?|dads?|fathers?|husbands?|wifes?|sisters?|brothers?|sons?|daughters?|kids?|grandmas?|grandpas?|"
    r"girlfriends?|boyfriends?|hubbys?|inlaws?|in laws?)"
)
_GENTE = (
    r"(?:vecin[oa]s?|compadre|comadre|amig[oa]s?|companer[oa]s?|jef[ea]|patron|cunad[oa]|prim[oa]s?|tio|tia|suegr[oa]|"
    r"compa|sobrin[oa])"
)
_FAMILIA = r"(?:papa|mama|espos[oa]|marido|mujer|hij[oa]s?|herman[oa]s?|nov[io]{2}|novia|viej[oa]|jefit[oa]|abuel[oa])"
_WHEELS = r"(?:car|truck|van|suv|ride|bus|bike|carro|coche|troca|camioneta|auto|camion|moto)"
_BREAKS = (
    r"(?:died|broke down|quit|stalled|wont start|doesnt start|wouldnt start|overheated|is (?:dead|broken|down)|"
    r"has a flat|got a flat|blew a tire|conked out|no prende|no arranca|no prendio|no arranco|se descompuso|"
    r"se quedo|se apago|se poncho|murio|fallo|dejo tirad[oa])"
)
_SO = (
    r"(?:,? (?:so|and (?:he|she|they|i|we)|have to|need to|need me|im|i am|i got|tengo que|y (?:lo|la|le|trae|traigo|"
    r"ando|voy|tengo)|por eso|asi que))"
)
_WELL = (
    r"(?:bien|parejo|derecho|derechito|chido|al (?:cien|100)|a todo dar|de maravilla|excelente|suave|de lujo|perfecto|"
    r"como (?:nuev[oa]|seda|reloj)|padre|de pelos|mejor|muy bien|super|increible|fuerte y)"
)
_HAPPENS = (
    r"(?:truene|suene|falle|rechine|vibre|tiemble|brinque|zumbe|humee|gotee|prenda|empiece|comience|se (?:apague|"
    r"descomponga|caliente|ponche|rompa|prenda|muera|quede|acabe|trabe|encienda)|haga (?:ruido|algo)|de lata|"
    r"tenga (?:ruido|fuga|problema|algo)|salga (?:humo|algo)|tire (?:aceite|agua)|huela|ya no (?:frene|ande|jale|"
    r"prenda|camine))n?"
)
_SEEN = (
    r"(?:prendio|prendieron|salio|encendio|aparecio|vi|oi|senti|he (?:visto|oido|sentido|notado)|note|veo|oigo|siento|"
    r"escucho|tiene|trae|hace|ha (?:prendido|salido|hecho|tenido|dado)|hay|tengo|traigo)"
)
_DIRT = r"(?:grease|stains?|oil|fingerprints?|mud|dirt|grasa|manchas?|mancha|manchad\w+|aceite|lodo)"
_WHERE_SMOKE_IS = (
    r"(?:cofre|capo|capot|bonete|motor|escape|mofle|radiador|llantas?|ruedas?|gomas?|frenos?|disco|balatas?|tablero|"
    r"ventilas?|frente|abajo|debajo|atras|adelante|tubo|cables?|bateria|todos|aire|clutch|embrague|delante|rin)\b"
)
_CABIN = (
    r"(?:seats?|upholstery|headliner|door panel|shirt|pants|carpet mat|floor mats?|door handles?|leather|steering "
    r"wheel|"
    r"paint|fender|bumper|asientos?|tapetes?|vestiduras?|cielo|tela|camisa|puerta|manijas?|pintura|tapiceria)"
)

_PEOPLE = (
    r"(?:i|we|they|owner|owners|husband|wife|kids?|dad|mom|guy|guys|uncle|who|nobody|no one|noone|someone|somebody|"
    r"anyone|anybody|people|tech|techs|mechanic|mechanics|dont|dont let anyone|employee|employees|family|passenger) "
    r"(?:\w+ )?smoke[sd]?(?! (?:the|my) (?:brakes?|tires?|clutch)| from| coming| out| in (?:the )?(?:mirror|exhaust))",
    r"(?:fumar|fumen?|fuman|fumaban|fumo|fumando)(?: \w+){0,3}",
    r"smok(?:ing|e|ed) (?:in|near|around|inside|by) (?:my|the) (?:car|truck|van)",
    r"(?:i|he|she|dad|mom|husband|wife) (?:\w+ )?slipped (?:on|a|my|in|at|down|and)(?: \w+)?",
    r"slipp?(?:ed|s|ing)? my (?:mind|dis[ck]|brain)",
    r"(?:shake|shaking|shook|shakes) (?:hands|his hand|her hand|your hand|my head|on it|things up)(?: \w+)?",
    r"pull(?:ing|ed)? (?:a |an |some |another |my )?(?:double|doubles|all ?nighter|shift|late shift|overtime|long|"
    r"extra|night shift|weeds|strings|muscle|hamstring|groin|back|tooth|fast one|rabbit|trailer|boat|camper)",
    r"pulled over(?= |\Z|[,.!])(?! because)",
    r"\b(?:on crutches|in a cast|in a sling|in a boot|broke my|broken (?:leg|arm|foot|ankle|wrist|hip|toe)|after "
    r"surgery|knee surgery)[^.!?]*",
    r"(?:my|his|her|the) (?:memory|brain|mind|budget|heart|head|wallet|faucet|pipes?|house|apartment|marriage) "
    r"(?:is |are |was |has )?(?:leak\w*|dead|shot|smok\w*|burning|burst|broken?|going|gone|flat|fried|shaking)",
    r"(?:me|te|nos|le|les|lo|la|como|cuando|si|no|por que|tu|no me) (?:se |te )?llamas|te llamas|llamas (?:luego|"
    r"manana|cuando|a|por|al|tu|mas)",
    r"(?:dog|cat|puppy|baby|kid|perro|gato|bebe|nin[oa]|nieto|nieta|hij[oa]) (?:\w+ )?(?:threw up|vomit\w*|peed|"
    r"puked|spilled|vomito|orino|meo|tiro|derramo|chewed|se hizo)[^.!?]*",
    r"(?:smell\w*|stink\w*|reek\w*|huele\w*|olor|apesta\w*) (?:\w+ )?(?:like |of |a |to |de )?(?:a |the |my )?(?:wet )?"
    r"(?:dogs?|cats?|new|feet|socks|milk|puke|vomit|pee|urine|fries|pizza|perfume|cologne|cigar\w*|tobacco|weed|"
    r"lavender|roses|money|victory|trouble|perro|gato|nuev[oa]|patas|leche|vomito|orines|pipi|perfume|cigarr\w*|"
    r"tabaco|mota|flores|cafe|comida|tacos|gato encerrado|chamusquina|ajo)",
    r"(?:wet dog|new car|cigar\w*|smokers?) smell",
    r"(?:something|that|this|it|price|deal|story) smells (?:a (?:bit|little) )?(?:fishy|funny) (?:about|with|"
    r"on)[^.!?]*",
)
_IDIOMS = (
    r"(?:my|his|her) (?:lower |bad |left |right |old )?(?:back|knees?|shoulders?|hips?|neck|joints?|teeth|bones|jaw|"
    r"ankles?|elbows?|"
    r"wrists?|spine|body|stomach) (?:is|are|was|were|keeps?|has been) (?:\w+ ){0,3}(?:grind|pop|click|crack|leak|"
    r"shak|lock|"
    r"creak|burn|smok)\w*(?: and (?:grind|pop|click|crack|creak|lock)\w*)?",
    r"(?:gonna|going to|ill|i will|we will|well|we can|i can|just) (?:just |keep |keep on )*limp(?:ing)? (?:it |her |"
    r"him |this thing "
    r")?along(?! (?:at|home|on|in|to|over)\b)",
    r"(?<!only )(?:drive|driving|drivin|run|running|runnin|ride|riding|keep|use|using) (?:it|her|him|this|that|this "
    r"(?:one|"
    r"thing|car|truck)|"
    r"that thing|the thing|the car|the truck)(?: like this| like that| as is)? (?:until|til+) (?:it|she|he|the "
    r"(?:wheels|doors|"
    r"engine)|something) (?:\w+ )?(?:quits|dies|falls?|blows|breaks|gives|goes|wont)"
    r"(?! (?:at|on|when|every|again|in|then (?:it|i have|wait|restart)|and (?:it|then|restart))\b)(?: \w+){0,2}",
    r"(?<!on )(?<!caught )fire (?:towers?|watch|lookouts?|stations?|house|hall|pits?|drills?|sale|marshal|hydrants?|"
    r"code|lanes?|wood|season|ban|ants?|extinguishers?|escape)",
    r"smoke (?:signals?|shop|shack|house|breaks?|detectors?|and mirrors)|holy smokes?|blow(?:s|ing)? smoke up|"
    r"(?:go|goes|went|gone|going) up in smoke(?= (?:with|when|because|after my)|\Z|[.,!])(?<!engine went up in smoke)|"
    r"smoke (?:em|them|it) if (?:you|u|ya|yall) (?:got|have|gots) (?:em|them|it|some)",
    r"pull(?:s|ed|ing)? (?:out|in|into|up|off|onto|on to)(?: (?:of|to|in|at|from|on|by))?(?: (?:the|my|our|your|yalls|"
    r"a|this))?(?: \w+)? (?:driveway|garage|lot|street|shop|station|house|bay|spot|curb|gate|door)s?(?= now|\Z|[.,!]|"
    r" be| "
    r"see| so| and (?:ill|will|head)| in \d)",
    r"(?:^|[.,!;] ?)(?:\W|ok |yes |yeah |im |i am |we are |were |just |now |hi |hey ){0,8}pulling (?:in|up|"
    r"out)(?= now|\Z|[.,!]| "
    r"in \d| right)",
    r"(?:a|an|the|another|big|small|little|false|major) (?:alarm|shock|blow|hit|bump in the road)(?= to| in| for|\Z)",
    r"cant stop,? (?:im |i am )?(?:in|at|now|here|today|talking|right now|to (?:talk|chat|text))(?! time)",
    r"loud and clear",
    r"(?:make|making|made|no need to make) (?:a |any |some |more )?(?:noise|fuss|stink) (?:about|over)",
    r"^\W*(?:(?:whoa|hey|ok|woah|hold on|wait|easy) ?,? )?(?:pump|hit|tap|slam on) the brakes(?=[,!.]| there| buddy)",
    r"(?:pump|hit|put|tap|slam|slammed)(?:ing)? (?:on )?the brakes on (?:that|this|it|the (?:appointment|visit|idea|"
    r"plan|whole|repair|work|job))",
    r"(?:price|deal|quote|offer|discount|rate|bill) (?:is |was |that is )?(?:\w+ )?(?:smoking|on fire|burning)(?: "
    r"\w+)?",
    r"saw red|seeing red|in the red (?:this|till|until|at the)(?: \w+)?|red tape|red eye|red flags?",
    r"(?:burning question|burning daylight|burned (?:before|by (?:you|shops?|a shop|the last))|burn(?:ed|t)? (?:my|"
    r"the) "
    r"(?:dinner|toast|hand|finger|tongue|bridge)s?)",
    r"(?:i|me|he|she|that|price) (?:was |got )?rattled (?:me|him|her|us)?",
    r"(?:will|would|going to|gonna|10 10|10/10) (?:\w+ )?(?:die|break down) (?:again lol|a (?:beater|legend|hero|"
    r"happy)|of "
    r"(?:old|hunger|boredom|laughter)|on (?:this|that) hill|in my driveway someday|trying|before (?:i|that))",
    r"would break down again",
    r"bumper to bumper|bumper stickers?|snow ?birds?",
    r"a todo vapor|ll?ueva,? (?:o )?truen\w*(?: o relamp\w+)?|truen\w+ o (?:relamp\w+|llueva)|trueno o no",
    rf"(?:ech|sac|bot|tir)\w* (?:humo|chispas|lumbre) (?!(?:\w+ ){{0,3}}{_WHERE_SMOKE_IS})(?:con|por|del|de|cuando veo|"
    r"nomas de) (?:esa?|el|la|los|tanto|ver|"
    r"coraje|pura|puro|su)?(?: \w+)?",
    r"(?:calent|calient)\w+ la cabeza|(?:buena|mala|bonita|linda|pura) vibra|nice and (?:tight|firm|stiff|quiet|cold|"
    r"smooth|hard)|vibra (?:bonita|buena|positiva|chida)",
    r"me (?:suena|sonaba|sono) (?:a|como|que|el|ese|bien|su)(?: \w+)?|(?:no )?me suena(?=\Z|[,.!])",
    r"(?:no )?(?:le|les|me) (?:hace|hagas?|hagan) (?:al )?ruido(?: a nadie)?",
    r"(?:por|para|pa) (?:unas?|dos|tres|cuatro) (?:gotas?|gotitas?)|(?:unas|dos|tres) (?:gotas|gotitas)(?: de \w+)?,? "
    r"no\b",
    r"(?:inspeccion|revision|verificacion|prueba|certificado|examen|control) (?:de|del|de los) (?:humos?|emisiones)",
    r"(?:llev|traig|entreg|dej)\w+ (?:\w+ )?(?:vaci[oa]|con el tanque|sin gas\w*)|(?:le |paso a |voy a |estoy |"
    r"necesito )"
    r"?ech(?:o|ar|arle|ando|e|amos) (?:\w+ )?gas\w*",
    r"(?:carro|coche|troca|camioneta|auto|motor|aire|todo|ya|me|lo) (?:\w+ )?jala(?:n|ba)? (?:\w+ )?" + _WELL,
    r"se (?:me |le )?(?:quedo sin pila|quedo sin bateria|acabo la pila|acabo la bateria) (?:al |el |mi |del "
    r")?(?:telefono|celular|cel|reloj)|"
    r"(?:telefono|celular|cel|reloj|control) (?:\w+ ){0,3}(?:sin pila|sin bateria|apagado|muerto)|(?:sin pila|sin "
    r"bateria|"
    r"se (?:me )?(?:quedo sin pila|quedo sin bateria) (?:el|mi) (?:telefono|celular|cel|reloj)|se (?:me )?(?:apago|"
    r"murio|descargo)) (?:el|mi) (?:telefono|celular|cel|reloj)",
)
_TRAFFIC = (
    r"(?:behind|following|after|past|blocked by|waiting on|stuck behind) (?:a |the |some |this )?(?:tow|dump|garbage|"
    r"trash|fire|cement|slow|big|school|delivery|mail) (?:truck|bus|van)",
    r"(?:past|at|by|after|before|near|waiting (?:at|for|on)|sitting at|through|to) (?:the |a |that |this )?(?:long |"
    r"next |"
    r"last |same )?(?:stop|traffic|red) ?lights?(?! (?:it|the car|she|car|when|the engine|and (?:it|the)|then (?:it|"
    r"the)))",
    r"(?:building|sign|house|place|shop|one|store|tower|door) with (?:the|a|that) (?:\w+ )?(?:red|orange|yellow|"
    r"flashing) "
    r"(?:light|sign|lamp)s?",
    r"(?:red light|luz roja|semaforo|en rojo)[, ]+(?:one sec|be (?:there|right)|almost|ya (?:mero|llego|casi|voy)|\d+ "
    r"min|"
    r"wait|espere|ahorita)",
    r"stalled (?:traffic|car|truck|bus|semi|vehicle|out here|on the (?:bridge|ramp))|traffic (?:is |has )?(?:stalled|"
    r"dead|"
    r"stuck|smok\w+)",
    r"(?:a|an|some|un|una|another|this) (?:\w+ )?(?:bus|semi|truck|car|van|train|trailer|camion|carro|tren|autobus) "
    r"(?:\w+ )?"
    + _BREAKS
    + r" (?:in front|ahead|on the (?:bridge|highway|tracks|interstate|road)|up ahead|enfrente|adelante|en (?:el|la))",
    r"se (?:descompuso|volteo|quedo|atraveso|apago) (?:un|una|el) (?:camion|trailer|carro|tren|autobus|pipa)(?: \w+)?",
    r"washed ?out (?:bridge|road)|water (?:main|heater|line|pipe)s?(?: \w+){0,3}|hot water heater(?: \w+){0,3}|"
    r"garage door(?: \w+){0,3}|power'?s? (?:is )?(?:out|off) (?:at|in)|battery tender|tubo de agua|calentador(?: de "
    r"agua)?",
    rf"jump(?:ed|ing|start|starting)? (?:\w+ )?(?:my|a|the|our) (?:\w+ )?(?:{_FOLK}|{_KIN})(?: {_WHEELS})?|jump (?:on|"
    rf"in) "
    r"(?:a|the) call",
    rf"(?:pas\w+|dar\w*|dando) (?:\w+ )?corriente (?:al?|a la|a mi|a un) (?:{_GENTE}|{_FAMILIA}|senor\w*)",
    rf"(?:my|the|our|a|his|her) (?:\w+ )?{_FOLK} {_WHEELS} (?:\w+ )?{_BREAKS}",
    rf"(?:my|his|her) (?:\w+ )?{_KIN} (?:\w+ )?{_WHEELS} (?:\w+ )?{_BREAKS}(?: on (?:him|her|them)| today| "
    rf"again)?{_SO}",
    rf"(?:el|la) (?:\w+ )?{_WHEELS} (?:de|del) (?:mi |un |una |su )?{_GENTE} (?:\w+ )?{_BREAKS}",
    rf"(?:el|la) {_WHEELS} (?:de|del) (?:mi |su )?{_FAMILIA} (?:\w+ )?{_BREAKS}{_SO}",
)
_THINGS = (
    rf"{_DIRT} (?:\w+ ){{0,3}}(?:on|all over|in|en|por|sobre) (?:\w+ )?(?:my |the |mi |mis |el |la |los |las "
    rf")?{_CABIN}",
    rf"{_CABIN} (?:\w+ )?(?:llen[oa]s?|manchad[oa]s?|covered|stained|smeared) (?:\w+ )?(?:de|with|in|by)?(?: {_DIRT})?",
    r"(?:you|your|u|they|tech|guys?|mechanic|top off|topoff|yall) (?:\w+ ){0,3}(?:spilled|splashed|dripped|slopped|"
    r"dribbled) (?:\w+ ){0,4}(?:on|all over|over|in) (?:\w+ ){0,2}\w+",
    r"(?:mats?|seats?|carpets?|interior|mirror|trim|antenna|hubcaps?|bumper|door|paint|radio) (?:\w+ ){0,3}(?:when|"
    r"after|"
    r"once) i (?:got|picked|get) (?:it|her|him|the car|my car|the truck)(?: back| up)?",
    r"(?:oil|grease) (?:stain|spots?|puddle) on my driveway(?= (?:thanks|from you|after you|since you))|(?:thanks|"
    r"thank you) "
    r"(?:a lot |so much )?for (?:the|that|all the) (?:oil |grease )?(?:stain|spot|mess|scratch|dent)\w*(?: \w+){0,3}",
    r"(?:reset|resetting|forgot to reset|reiniciar|resetear|resetearon|apagarle|apagar) (?:\w+ ){0,2}(?:oil |"
    r"maintenance |"
    r"service |aceite |del? )*(?:light|reminder|luz|foco|testigo|aviso)(?: de aceite| del aceite)?",
    r"(?:do|can|could|will) (?:you|yall) (?:guys )?(?:take|accept|recycle|dispose of|haul) (?:\w+ ){0,3}(?:oil|tires?|"
    r"battery|batteries|coolant|antifreeze)(?: \w+){0,4}",
    r"(?:wheels?|tires?|tyres?|rims?|blades?|battery|belt|motor|engine) (?:on|for|of|off|from) (?:a|an|my|the|our) "
    r"(?:\w+ )?"
    r"(?:mower|lawn ?mower|tractor|wheelbarrow|stroller|bike|bicycle|golf cart|trailer|boat|scooter|atv|quad|go ?kart)",
    r"(?:ac|air conditioning|radio|bluetooth|stereo|aux) (?:\w+ )?(?:noise|static|crackl\w+|estatica)|trae estatica",
)
_QUESTIONS = (
    r"(?:which|what) (?:\w+ )?(?:was|were|did you (?:say|find|mean))\b[^.?!]*",
    r"(?:which|cual(?: de las)?|que) (?:one|tire|wheel|side|llanta|goma|lado|rueda)s? (?:is|are|es|son|era|eran|fue|"
    r"estaba)\b"
    r"[^.?!]*",
    r"(?:how|what) (?:would|do|can|should|will) (?:i|you|we|one|a person) (?:\w+ )?(?:know|tell)\b[^.?!]*",
    r"(?:would|will|should|could) i (?:\w+ )?(?:hear|feel|notice|see|smell|know)\b[^.?!]*",
    r"(?:what are|any|are there) (?:the )?(?:signs|symptoms|warning signs)\b[^.?!]*",
    r"(?:any|a|the|whats the|what are the) (?:chances?|odds|risk|likelihood) (?:\w+ )?(?:of|that|it)\b[^.?!]*",
    r"(?:does|will|would|is) (?:\w+ ){0,2}(?:warranty|insurance|plan|that|this) (?:\w+ )?(?:cover|include)\w*\b[^.?!]*",
    r"if (?:you|yall|they|u|the (?:tech|guys?|mechanic)) (?:\w+ )?(?:find|see|notice|spot|discover|found|"
    r"break)\b[^.?!]*",
    r"si (?:le |me |les )?(?:encuentran|hallan|ven|descubren|sale)\b[^.?!]*",
    r"(?:what|what would|what will|que|que le|y que) (?:happens?|pasa(?:ria)?) (?:if|when|si|cuando) (?:i |we |lo |la "
    r"|le |se |"
    r"yo |me |no ){1,2}(?:\w+ )?(?:dont|do not|wait|skip|leave|put|ignore|never|keep putting|dejo|hago|espero|cambio|"
    r"arreglo|llevo|pospongo|aguanto|atiendo|mando|ignoro)\b[^.?!]*",
    r"si (?:no (?:lo|la|le|se) \w+|lo dejo|me espero|espero)(?: \w+){0,4},? (?:se |que |le |truena|falla|"
    r"revienta)[^.?!]*",
    r"(?:como se|como voy a saber|como sabria|como puedo saber|como me doy cuenta) si\b[^.?!]*",
    r"(?:why|how come|when|how often|how fast) (?:do|does|would) (?!my|it|the|this|mine|i|we|she|he|that|there)(?:\w+ "
    r"){1,3}"
    r"(?:go bad|wear(?: out)?|fail|break|crack|leak|rust|last|die)\b[^.?!]*",
    r"(?:is|are) (?!my|it|the|this|mine|i|we|she|he|that|there)(?:\w+ ){1,3}(?:bad|dangerous|harmful) (?:for|"
    r"to)\b[^.?!]*",
    r"^\W*what (?:is|are|does|do) (?:a|an) (?!light|noise|smell)(?:\w+ ?){1,4}(?=\Z|[?.!])",
    r"(?:is|are) (?:\w+ ){0,4}recall\w*(?: \w+){0,6}",
    r"(?:only|solo|nomas) (?:\w+ )?(?:come|go|bring it|call|voy|llevo|vengo) (?:\w+ )?(?:in )?(?:when|if|cuando|"
    r"si)\b[^.?!,]*",
    rf"cuando (?:\w+ ){{0,2}}{_HAPPENS}(?! (?:y|me da))",
    r"(?:when|while) i (?:was|came|went) (?:\w+ )?(?:in|there|by) (?:for|with|about) (?:the|a|my|that) \w+(?: \w+)?",
    r"(?:make|makes|making|get) (?:it|them|this|these) (?:all )?(?:quit|stop)(?=\Z|[?.!,])",
    r"(?:barely|hardly|rarely|seldom|casi no|apenas|casi nunca) (?:ever |lo |la )?(?:drive|use|drove|take|uso|manejo|"
    r"muevo|saco) ?"
    r"(?:it|the (?:car|thing|truck|van)|that|this|my|her)?(?=\Z|[.,!]| (?:much|anymore|these|so|and|it|a|al|el|y|"
    r"porque|la)\b)",
    r"(?:esta|tengo|sigue|lo tengo) (?:el carro )?parad[oa] (?:hasta|porque|por|mientras|en (?:la|el) (?:casa|garaje|"
    r"cochera))[^.!?]*",
    r"(?:front|rear|left|right|delante\w*|trase\w*|izquierd\w+|derech\w+|atras|enfrente|adelante) (?:or|o) (?:the |la "
    r"|el |los |las )?"
    r"(?:front|rear|back|left|right|delante\w*|trase\w*|izquierd\w+|derech\w+|atras|enfrente|adelante)",
    r"si (?:un dia |algun dia |luego |despues |acaso )(?:\w+ ){0,2}\w+",
    rf"no (?:me |se |le |se le |se me |les )?{_SEEN} (?:\w+ )?(?:ningun[oa]?|ni un[oa])(?: \w+){{0,2}}",
    r"(?:is|are|does|do|can|could|will|would) (?:(?!(?:my|mine|it|its|this|that|the|she|he|you|i|we|they|"
    r"there)\b)\w+ ){1,5}?"
    r"(?:something that |a thing that |really |actually |ever |going to |able to |enough to )*"
    r"(?:kill|hurt|harm|damage|ruin|wreck|destroy|break|stall|blow|bad for|hard on|shorten)s?(?: up)? (?:the|an?|my|"
    r"your|our) "
    r"(?:\w+ )?(?:engine|motor|car|truck|brakes?|transmission|battery|tires?|rotors?|alternator|glass)",
    r"(?:my|his|her|our|these|old) (?:\w+ )?(?:hands?|fingers?|thumbs?|eyes?|arms?)(?: \w+){0,2} (?:shak\w+|"
    r"trembl\w+|cramp\w*|"
    r"hurt\w*|jump\w*|lock up|go numb|twitch\w*)(?! (?:\w+ ){0,2}(?:when|while|on|from|at|every|as|if|holding|the "
    r"wheel)\b)",
    r"(?:am i|will i|are we|will we|would i) (?:going to |gonna |about to )?(?:break down|be stranded|get stranded|"
    r"get stuck|blow a tire|"
    r"have a blowout|crash|overheat|end up stranded)",
    r"what (?:is|was) (?:that|the|this) (?:noise|sound|light) (?:test|check|policy|ordinance)",
)
"""What is asked or told in general, or only supposed, and not of the car as it is now."""

IDIOMS = phrases(*_PEOPLE, *_IDIOMS, *_TRAFFIC, *_THINGS, *_QUESTIONS, *SPANISH_IDIOMS)
"""All of it: what matches says nothing about the car."""


_NO_LONGER = re.compile(
    r"\b(?:ya no (?:\w+ )?(?:chilla|rechina|suena|truena|vibra|tiembla|brinca|hace (?:el |ese |ruido)|jala (?:ni|para|"
    r"pa|a la|de lado|chueco)|tira|gotea|jalonea|huele|"
    r"humea|se (?:apaga|calienta|jala|va de lado)|zumba|silba|cruje|raspa)\w*|"
    r"(?:stopped|quit) (?:making|squeaking|squealing|shaking|grinding|leaking|pulling|vibrating|rattling|clunking|"
    r"\w+ing)|"
    r"no (?:more|longer) (?:\w+ )?(?:noise|noises|squeak\w*|squeal\w*|shak\w*|grind\w*|leak\w*|pull\w*|vibrat\w*|"
    r"rattl\w*|"
    r"clunk\w*|wobbl\w*|smell\w*|light|lights|drip\w*|hum\w*)|"
    r"(?:doesnt|does not|dont|isnt|aint|not) (?:\w+ )?(?:squeak|squeal|shake|grind|leak|pull|vibrate|rattle|clunk|"
    r"wobble|shaking|"
    r"squealing|squeaking|pulling|leaking)\w* (?:\w+ )?(?:anymore|any more|now|at all)|"
    r"(?:noise|squeak|squeal|rattle|shake|shaking|vibration|clunk|leak|light|ruido|rechinido|zumbido|fuga|golpeteo) "
    r"(?:is |are |ya |se )?"
    r"(?:\w+ )?(?:gone|went away|fue|quito|desaparecio|disappeared|acabo))\b"
)
_BUT_NOW = re.compile(
    r"\b(?:but|pero|still|now (?:it|the|theres|there|i)|todavia|sigue|siguen|ahora|aunque|except|another|different|"
    r"otro|otra|instead|solit[oa]|(?:quito|fue|acabo|desaparecio) (?:\w+ )?sol[oa]|by itself|on its own)\b"
)


def is_over(plain: str) -> bool:
    """Whether it tells that what was wrong is no longer so, and nothing else."""
    return bool(_NO_LONGER.search(plain)) and not _BUT_NOW.search(plain)
