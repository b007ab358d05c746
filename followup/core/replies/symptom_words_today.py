"""The words in which customers report what a person should look at today, in both languages.

Each line is a regular expression; what must not be driven on stands in `symptom_words.py`.
"""

from __future__ import annotations

_NUTS = r"(?:lug ?nuts?|lugs|wheel (?:nuts?|bolts?|studs?)|studs?)"
TODAY = (
    rf"(?:missing|lost|loose|broke|sheared|snapped) (?:\w+ ){{0,3}}{_NUTS}",
    rf"{_NUTS} (?:\w+ ){{0,3}}(?:missing|gone|loose|fell off|came off|sheared|snapped|broke|falling off|stripped)",
    r"(?:back|rear|front|tail|ass|butt) ?end (?:\w+ )?(?:slides?|slips?|kicks? out|fishtails?|swings?|steps? out|"
    r"sliding|slipping|breaks loose|"
    r"loses grip|drifts?)",
    r"(?:it|car|truck|van|she|tires?) (?:\w+ )?(?:slides?|slips?|hydroplanes?|slid|skids?|skates?|sliding|slipping) "
    r"(?:\w+ )?(?:in|on|when|every|all|"
    r"around|over) (?:\w+ ){0,4}(?:rain\w*|wet|turns?|corners?|road|curves?|brake|braking|stop)",
    r"hood (?:\w+ )?(?:popped|flew|came) (?:open|up)(?: \w+)?",
    r"(?:car|truck|it|van) (?:lunges|surges|bucks|lurches)(?: \w+)?",
    r"bateria (?:\w+ ){0,2}(?:no aguanta|no carga|muere|baja|descargada)",
    r"(?:carro|coche|troca|auto|volante) (?:\w+ ){0,2}(?:se )?jala(?= |\Z)(?! bien)",
    r"(?:alternator|starter|transmission|brakes?|battery|clutch|engine|water pump|fuel pump|belt|wheel "
    r"bearing|bearing|ac|compressor) (?:\w+ ){0,2}(?:going (?:out|bad)|on (?:its|the) way out|about to go|"
    r"shot|toast)",
    r"(?:lost|missing|lose) (?:a |some |one )?lug nuts?",
    r"starts? (?:up )?(?:then|and|but) (?:then |it )?(?:dies|stalls|quits|shuts)",
    r"(?:acceleration|power|engine|motor|car|it|throttle) (?:\w+ ){0,2}(?:sluggish|laggy|weak|rough|dead)",
    r"sluggish",
    r"(?:exhaust|muffler|engine|car|it) (?:\w+ ){0,4}(?:loud|louder)(?! music)",
    r"se (?:me )?(?:descargo|descarga|acabo) (?:la |mi )?(?:bateria|pila)",
    r"(?:direccion|volante) (?:\w+ ){0,2}(?:traba|atora|dur[oa]|pega|patea|jala)",
    r"(?:steering|brakes?|wheels?|tires?|engine|motor|transmission|tranny|dash(?:board)?|pedal|gear "
    r"?shift|shifter|clutch|radiator|hood|exhaust|muffler|suspension|battery|headlights?|tail ?lights?|"
    r"front end|rear end|back end|axle|alternator|starter|belt|power steering|fan|fuel pump|gas pedal|"
    r"throttle|vents?|windshield|door) (?:\w+ ){0,5}(?:went out|gave out|giving out|goes out|quit working|"
    r"stopped working|failed|fails|failing|stays? (?:on|lit)|shimm\w+|wobbl\w+|shak(?:es?|ing|y)|"
    r"vibrat\w+|stuck|locks? up|locked up|locking|feels? (?:\w+ )?(?:loose|weird|off|funny|strange|wrong|"
    r"heavy|light|rough)|smok(?:es|ing)|leak(?:s|ing|ed)|cracked|fell off|falling off|hanging|dragging|"
    r"smells?|rattl\w+|sag(?:s|ging)|slips|slipping|acting up|act(?:s|ing)? (?:weird|funny)|making (?:a|"
    r"that|this|weird|noise)|wont (?:go|move|shift|turn|stop|lock|open|work|engage|catch|fire|come|"
    r"respond)|doesnt (?:work|engage|respond|turn|stop|catch)|barely (?:moves?|goes|works?|stops?|runs?)|"
    r"not (?:charging|working|engaging|responding|turning))",
    r"(?:car|truck|van|it|she|suv|vehicle|jeep) (?:\w+ ){0,2}(?:wont|doesnt|cant|barely|hardly) (?:\w+ "
    r"){0,2}(?:go(?:es)?|move|moves|shift|drive|accelerate|pick up|turn|run|runs|rev|revs|catch|fire|"
    r"reverse|back up|hold)(?! (?:to|with|in (?:on|today|tomorrow|until|until|this|that)|til|until|well "
    r"with|much|anymore|that much|far|around|there|anywhere))",
    r"revs? (?:\w+ ){0,4}(?:but|doesnt|wont|high|up and down)",
    r"(?:hear|heard|hearing|makes?|making|made) (?:(?:a|an|this|that|some|these|weird|lots of|an awful|"
    r"kinda|like|the) )+(?!appointment|reservation|call|deal|plan|note|decision|payment|mistake|"
    r"point)\w+(?: \w+){0,3} (?:when|whenever|while|every time|at (?:\d+ ?(?:mph|miles|km|k)|high|low|speed|"
    r"highway|idle|stop)\w*|on (?:bumps|turns|the highway|cold|start|take)|over bumps|under the|from (?:the|under|my|"
    r"behind))",
    r"(?:odd|funny|weird|bad|strange|sweet|rotten|burnt|chemical|hot|awful|nasty|musty) smell",
    r"(?:it|car|truck|something|inside|engine|cabin|vents?|exhaust) (?:\w+ ){0,2}(?:smells|stinks)",
    r"(?:get|got|getting|needed|need|give|gave|take|took|had to) (?:it |me )?(?:a )?(?:jump|jumped|jump "
    r"start|boost)\b",
    r"jump(?:ed|ing)? (?:it|my car|the car|the battery|her)",
    r"shimm\w+",
    r"something (?:is |feels |seems |sounds |\w+ )?(?:wrong|off|broke\w*|loose|hanging|dragging|weird|not "
    r"right)",
    r"(?:went|go|goes|going|gone) flat",
    r"(?:le |me )?falla(?:n)? (?:\w+ ){0,2}(?:freno|frenos|motor|direccion|carro|troca|luces|marcha|"
    r"transmision|bateria)",
    r"(?:se siente|siento|parece) (?:que |como que |como si )(?:\w+ ){0,4}(?:apag\w+|fall\w+|va\b|mueve|"
    r"suelt\w+|brinc\w+|jal\w+|tiembla|trab\w+)",
    r"(?:se )?(?:oye|oyen|escucha|escuchan|oigo|suena|suenan) (?:\w+ ){0,2}(?:golpe\w*|raro|feo|ruido|"
    r"como|algo|tronido|fuerte|mal|zumbido|rechinido)",
    r"golpe (?:\w+ )?(?:abajo|debajo|adelante|atras|en)",
    r"(?:pasar|paso|pasaron|pasarle|pase) corriente",
    r"(?:agua|liquido|aceite|mancha\w*|charco) (?:\w+ ){0,3}(?:abajo|debajo)",
    r"(?:no quiere|batalla para|cuesta|tarda en) (?:prender|arrancar|encender|frenar|caminar|jalar)",
    r"(?:luz|foco|testigo) (?:\w+ )?(?:amarill|roj|naranja|prendid|encendid)\w+",
    r"jala (?:mucho |bien |feo )?(?:para|hacia|a) (?:la |el )?(?:derecha|izquierda|lado)",
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
    r"turn over|turning over)(?! (?:texting|the week|work|until|till|at (?:\d|work|noon)|a new|my (?:day|week|"
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
    r"tembl(?:o|aba|aban|ar)(?! (?:la tierra|en|el piso|el suelo))",
    r"vibr(?:o|aba|aban|ar)",
    r"tronaba(?:n)?",
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
