"""The words in which customers report what may be unsafe, in both languages, by the part of the car.

Each line is a regular expression; all but `TODAY` are of the kind that must not be driven on.
"""

from __future__ import annotations

PEDAL = r"(?:pedals?|brakes?|breaks?|clutch|pedal del freno|frenos?|bre[ck]+as?)"
FLAT = (
    r"flat(?: tire| tyre)?s?(?! (?:rate|fee|price|out|tow|bed|top|screen|charge|"
    r"tire repair place))",
    r"(?:tire|tyre|wheel)s? (?:is |was |just |has |looks |are |went |goes |keeps going |totally |"
    r"completely )*(?:flat|blown|busted|blew|popped|shredded|gone down)",
    r"(?:tire|tyre) (?:blew|popped|burst|exploded)",
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
    r"ing))(?! (?:by|in|over|at|and|texting|to|for|sending|calling|messaging|the (?:text|mess)))",
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
    r"(?:temp(?:erature)?|heat) (?:gauge |light |needle |is |was |went |"
    r"needle is )+(?:\w+ ){0,2}(?:red|high|up|on|hot|pegged|maxed)",
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
TODAY = (
    r"(?:whirr?|hiss|growl|buzz|gurgl|chirp)(?:s|es|ing|ed)?",
    r"(?:click|tick|popp?|rubb?|bang|knock|thunk|flapp?)(?:s|ing) (?:sound|noise|when|in|from|at|under|"
    r"every|on|coming)",
    r"(?:loud|big|hard) (?:bang|pop|thud|clunk|thump)",
    r"(?:crank|turn)(?:s|ing|ed)? (?:over )?(?:\w+ ){0,2}but (?:\w+ )?(?:wont|doesnt|not|no|never|dont)",
    r"stall\w*",
    r"(?:dies|died|dying|shuts? off|cuts? (?:out|off)) (?:\w+ ){0,3}(?:at|when|while|on|every|in)",
    r"(?:fluid|oil|coolant|water|liquid|stuff|something|goo|juice|antifreeze) (?:\w+ ){0,3}(?:under|all "
    r"over|on my|on the) (?:\w+ ){0,2}(?:car|truck|engine|driveway|garage|ground|floor|carport|street|"
    r"concrete)",
    r"(?:wont|doesnt|not|cant|hard to|trouble) (?:\w+ ){0,2}(?:go(?:ing)? into|shift(?:ing)?|get(?:ting)? "
    r"into|stay in|change) (?:\w+ )?(?:gears?|reverse|drive|park|right|correctly)",
    r"(?:transmission|tranny|trans) (?:\w+ ){0,3}(?:slip\w*|jerk\w*|hard|rough|stuck|bad|weird|acting|"
    r"gone|failing|going|shifts?)",
    r"slip(?:s|ping|ped)(?! my mind)",
    r"(?:wont|doesnt|cant|not) (?:\w+ ){0,2}(?:go|get|run|drive) (?:over|above|past|faster than|more "
    r"than) \d+",
    r"hesitat\w+",
    r"bogs? down",
    r"(?:rough idle|idl(?:es|ing) (?:\w+ )?(?:rough|high|low|weird|funny))",
    r"surg(?:es|ing)",
    r"acting (?:\w+ )?(?:up|weird|funny|strange|crazy)",
    r"(?:running|runs|drives|driving|riding|rides) (?:\w+ ){0,2}(?:rough|bad|weird|funny|terrible|like "
    r"crap|awful|horrible|strange)",
    r"wipers? (?:\w+ ){0,2}(?:dont|doesnt|wont|not|stopped|quit|arent) (?:work|mov|turn|wip|go)\w*",
    r"seat ?belts? (?:\w+ ){0,3}(?:stuck|broke\w*|wont|doesnt|not)",
    r"battery (?:\w+ ){0,3}(?:dead|died|dying|wont hold|drain\w*|keeps)",
    r"(?:lost|losing) (?:a wheel|a tire|my muffler|coolant|oil|pressure)",
    r"(?:ran|run|rode|drove|running) over (?:a |something|some )(?:\w+)?",
    r"(?:tire|tyre)s? (?:\w+ ){0,2}(?:looks?|is|seems?|keeps? (?:getting|going)|going) (?:\w+ )?(?:low|"
    r"flat|soft)",
    r"(?:off center|out of alignment)",
    r"tir(?:a|ando|o) (?:\w+ )?(?:aceite|agua|liquido|anticongelante|gasolina)",
    r"se (?:me |le )?(?:va|jala|carga|desvia|ladea) (?:\w+ ){0,3}(?:lado|izquierda|derecha)",
    r"brinc(?:a|ando|otea)",
    r"(?:clutch|embrague|transmision|caja) (?:\w+ ){0,3}(?:patin\w*|resbal\w*|dur[oa]|no entra\w*|fall\w*|"
    r"truena|jala)",
    r"(?:se )?patin(?:a|ando)",
    r"no (?:le |me )?(?:entran?|agarran?) (?:\w+ ){0,2}(?:cambios?|velocidad\w*|reversa|drive|primera|"
    r"fuerza)",
    r"no (?:\w+ )?(?:da marcha|jala bien|camina|avanza|desarrolla|acelera)",
    r"(?:mofle|escape|defensa|facia) (?:\w+ ){0,3}(?:colgand\w*|arrastr\w*|suelt[oa]|cay\w*|roto|se cayo)",
    r"(?:me |le )?(?:pierde|perdiendo|gasta|bota|botando|escurre|escurriendo) (?:\w+ )?(?:agua|aceite|"
    r"liquido|anticongelante|gasolina)",
    r"hace (?:\w+ ){0,3}(?:zumbid\w*|chillid\w*|tronid\w*|clac|toc|tac)",
    r"(?:zumbido|tronido|chillido|golpeteo|golpes|rechinido)s?",
    r"mancha (?:\w+ ){0,3}(?:aceite|el piso|abajo|debajo|liquido)",
    r"(?:prendi[od]o?|prendid[oa]|sali[oa]) (?:\w+ ){0,3}(?:foco|luz|check|testigo)",
    r"(?:sale|aparece|aparecio|salio) (?:\w+ ){0,2}(?:foco|luz|testigo|mensaje de advertencia)",
    r"nois(?:e|es|y)",
    r"(?:weird|strange|funny|loud|odd|bad|awful|horrible|scary|crazy|new) (?:sound|sounds|rattle)",
    r"(?:sounds?|making|hear(?:ing)?|heard|makes?) (?:\w+ ){0,4}(?:grind\w*|clunk\w*|squeal\w*|"
    r"squeak\w*|rattl\w*|knock\w*|click\w*|hum(?:ming)?|whin\w*|scrap\w*|thump\w*|bang\w*|"
    r"pop(?:ping)?|tick\w*|hiss\w*|screech\w*|roar\w*|clank\w*|creak\w*|whistl\w*)",
    r"grind(?:s|ing)?(?! my gears)",
    r"squeal(?:s|ing|ed)?",
    r"squeak(?:s|ing|y|ed)?",
    r"screech(?:es|ing)?",
    r"clunk(?:s|ing|y)?",
    r"rattl(?:e|es|ing)",
    r"knocking",
    r"clank(?:s|ing)?",
    r"thump(?:s|ing)?",
    r"scraping",
    r"whining",
    r"roaring",
    r"humming",
    r"creak(?:s|ing)?",
    r"sounds (?:like (?:a |it)|terrible|awful|horrible|weird|funny|off|rough|bad when|"
    r"strange)(?! (?:good|plan|great|deal|scam|fun|idea|works))",
    r"vibrat(?:e|es|ing|ion|ions|ed)",
    r"shak(?:e|es|ing|y)(?! on it)",
    r"shudder(?:s|ing)?",
    r"shimmy(?:ing)?",
    r"pulsat(?:e|es|ing|ion)",
    r"judder\w*",
    r"jerk(?:s|ing|y)?",
    r"bucking",
    r"pull(?:s|ing|ed)? (?:\w+ ){0,3}(?:left|right|to (?:the|one) (?:left|right|side)|hard|"
    r"to a side|side|when i brake)",
    r"drift(?:s|ing) (?:left|right|to)",
    r"pulling",
    r"leak(?:s|ing|ed|y|age)?",
    r"drip(?:s|ping|ped)?",
    r"puddles?",
    r"(?:fluid|oil|coolant|water|liquid) (?:\w+ ){0,3}(?:under|on the (?:ground|floor|driveway)|"
    r"everywhere|spots?|spot)",
    r"(?:check )?engine(?: warning)? (?:light|lamp)",
    r"check engine",
    r"cel (?:is |came |just )?on",
    r"(?:warning|abs|battery|tpms|tire pressure|pressure|dash(?:board)?|maintenance|charging|"
    r"traction|orange|yellow|amber|new) (?:\w+ )?(?:light|lamp|symbol|icon)s?",
    r"(?:lights?|lamp) (?:\w+ ){0,3}(?:came on|is on|just came|popped up|lit up|came back|"
    r"keeps coming|turned on|wont go off|stays on|on (?:the|my) dash)",
    r"(?:check|warning) (?:\w+ )?(?:came|popped) (?:on|up)",
    r"(?:head|tail|brake) ?lights? (?:\w+ ){0,3}(?:out|dim|weak|dead|not work\w*|dont work|"
    r"doesnt work|went out|wont|flicker\w*|burn(?:ed|t) out)",
    r"lights? (?:\w+ ){0,2}(?:dim|flicker\w*|went out|go out|not working|are out)",
    r"dash(?:board)? (?:\w+ ){0,4}(?:dead|dark|blank|lit up|went|black|out|lights|christmas)",
    r"no (?:head|tail|brake) ?lights?",
    r"(?:weak|dim) (?:head)?lights",
    r"(?:wont|doesnt|cant|didnt|wouldnt|not|isnt|dont|refuses? to|never|trouble|hard to|"
    r"cant get it to|barely|hardly|hard time) (?:\w+ ){0,2}(?:start(?:ing|s)?|crank(?:ing)?|"
    r"turn over|turning over)(?! (?:texting|the week|work|until|till|at|a new|my (?:day|week|"
    r"shift)|on))",
    r"no (?:start|crank)",
    r"(?:car|it|truck|van|engine|suv|she|motor|battery) (?:\w+ ){0,2}(?:died|dies|stall(?:s|ed|"
    r"ing)?|dead|quit(?:s|ting)?|broke down|cut(?:s|ting)? (?:out|off)|shut(?:s|ting)? (?:off|"
    r"down)|conked out|breaks down)",
    r"(?:dead|died) (?:\w+ )?(?:battery|on the (?:road|highway|freeway|side|way|interstate))",
    r"(?:just |it )?(?:quit|died|stalled|cut out|shut off) on (?:me|us|the (?:road|highway|"
    r"freeway|interstate))",
    r"stall(?:s|ed|ing)",
    r"stranded",
    r"(?:im|i am|were|we are|got|been|am|broke) (?:\w+ )?stuck(?! (?:in|at) (?:\w+ )?(?:traffic|"
    r"work|a meeting|meeting|meetings|school|the office|home))",
    r"(?:help )?im stuck(?! (?:in|at))",
    r"broke(?:n)? down",
    r"break(?:s|ing)? down",
    r"broke down",
    r"tow(?:ed|ing| truck)(?! (?:package|hitch|capacity|mirror))",
    r"jump (?:start|it)",
    r"jumpstart",
    r"needs? a (?:jump|tow)",
    r"limp mode",
    r"slipp(?:ing|ed|s)",
    r"misfir\w+",
    r"sputter\w*",
    r"backfir\w+",
    r"(?:loses?|losing|lost|no) power(?! (?:at|steering in) (?:home|house|my))",
    r"(?:suspension|shock|strut|axle|exhaust|muffler|bumper) (?:\w+ ){0,3}(?:broke\w*|dragging|"
    r"hanging|fell|falling|loose|collapsed|snapped|dropped)",
    r"something (?:is |feels |seems |sounds )?(?:wrong|off|broke\w*|loose|hanging|"
    r"dragging)(?: with| on| under| in)?",
    r"feels (?:unsafe|weird|funny|loose|rough|sketchy|wrong|off|strange) ?(?:when|while|to drive|"
    r"at|on the)?",
    r"(?:doesnt|dont|not) feel (?:safe|right)",
    r"unsafe",
    r"(?:crack(?:ed|s)?) (?:\w+ ){0,2}(?:windshield|tire|block|rotor|rim|wheel)",
    r"(?:tire|tyre)s? (?:\w+ ){0,3}(?:crack(?:ed|ing|s)?|low|bald|shredd\w+|splitting|"
    r"coming apart)(?! (?:priority|price|cost|on money))",
    r"low (?:tire|tyre|oil|air) pressure",
    r"hit (?:a|the|my) (?:pothole|curb|deer|kerb|bump)",
    r"(?:was in|had|in|been in|got in|got into) (?:\w+ ){0,2}(?:accident|crash|wreck|collision)",
    r"crash(?:ed)?",
    r"rear ended",
    r"ruidos?(?! de (?:los )?mensajes)",
    r"rechin\w+",
    r"chill(?:a|an|ando|ido)",
    r"chirri\w+",
    r"rechinido",
    r"truena(?:n)?",
    r"tronando",
    r"golpete\w+",
    r"zumb\w+",
    r"suena (?:\w+ ){0,3}(?:raro|feo|mal|fuerte|horrible|extrano|como)",
    r"sonido (?:\w+ ){0,2}(?:raro|feo|extrano|metalico|fuerte)",
    r"vibra(?:n|ndo|cion|ciones)?",
    r"tiembl\w+",
    r"temblor\w*",
    r"temblando",
    r"sacud\w+",
    r"jal(?:a|ando|onea\w*) (?:\w+ ){0,3}(?:lado|izquierda|derecha|a la)",
    r"se (?:va|jala|carga|desvia) (?:\w+ ){0,2}(?:lado|izquierda|derecha)",
    r"tira (?:\w+ )?(?:aceite|agua|liquido|anticongelante|a la)",
    r"fug(?:a|as|ando)",
    r"gote(?:a|ando|o|ra)",
    r"derram\w+",
    r"charco",
    r"(?:luz|foco|testigo|luces) (?:\w+ ){0,5}(?:prendid[oa]|encendid[oa]|prendio|encendio|"
    r"prendieron|check|motor|tablero|advertencia|bateria|amarill[oa])",
    r"(?:se (?:me )?)?(?:prendio|encendio|prende) (?:\w+ ){0,3}(?:luz|foco|testigo|check)",
    r"check engine",
    r"(?:faros?|luces) (?:\w+ ){0,3}(?:debil\w*|apagad\w*|fundid\w*|no (?:prende|encienden|sirve|"
    r"prenden|funcionan)\w*|tenues|bajit\w+|fallan\w*)",
    r"tablero (?:\w+ ){0,3}(?:apagado|muerto|se apago|negro|oscuro)",
    r"no (?:\w+ )?(?:arranca|arranco|prende|enciende|prendio|encendio|quiere (?:arrancar|prender|"
    r"encender)|da marcha|arrancaba|prendia)",
    r"se (?:me )?(?:apago|apaga|murio|quedo|descompuso|paro)(?: (?:el|mi|en|a|el carro|de repente|"
    r"solo))?",
    r"me quede (?:\w+ )?(?:parad[oa]|tirad[oa]|varad[oa]|botad[oa]|en (?:la|el|medio)|"
    r"sin (?:bateria|marcha|direccion|luces))",
    r"nos quedamos (?:tirados|varados|parados|botados)",
    r"quede (?:parad[oa]|tirad[oa]|varad[oa]|botad[oa])",
    r"(?:me|nos) dejo (?:tirad|botad|parad|varad)\w+",
    r"bateria (?:\w+ ){0,2}(?:muerta|descargada|se murio|muerto)",
    r"grua",
    r"pierde (?:fuerza|potencia|agua|aceite|liquido|aire|anticongelante)",
    r"(?:llanta|goma|neumatico)s? (?:\w+ ){0,3}(?:lis[oa]s?|rajad\w+|agrietad\w+|cortad\w+)",
    r"se siente (?:\w+ ){0,2}(?:rar[oa]|mal|feo|inestable|flojo)",
    r"algo (?:\w+ ){0,2}(?:mal|raro|suelto|roto|flojo) (?:con|en|abajo|debajo)",
    r"anda (?:raro|mal|fallando)",
    r"(?:esta |viene |anda )?fallando",
    r"jalonea\w*",
    r"se jalonea",
    r"cascabele\w+",
    r"choque",
    r"choco",
    r"accidente",
)
