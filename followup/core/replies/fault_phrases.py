"""Reports that are a phrase rather than two words: starting, running away, near misses, losing power, distrust."""

from __future__ import annotations

NOW = (
    # nearly not stopping
    r"(?:almost|nearly|about|barely missed|came close to|inches from) (?:\w+ ){0,2}(?:rear ?end\w*|hit|hitting|t "
    r"?bon\w+|plow\w*|ran into|ran over|slid into|"
    r"run into|running into|went through|didnt stop|couldnt stop|didnt make it)(?! (?:a )?(?:deer|dog|cat|"
    r"squirrel|traffic|snooze))",
    r"(?:rolled|slid|sailed|blew|went|coasted|skidded|shoved me|pushed me|carried me) (?:right |straight |clean "
    r")?(?:through|past|into) (?:a|the|that|my) "
    r"(?:red|stop|light|intersection|crosswalk|mailbox|hedge|fence|garage|wall|house)\w*",
    r"(?:press|push|pump|mash|hit|stomp|step)(?:ed|ing|s)? (?:\w+ ){0,4}(?:and|but) (?:\w+ ){0,4}(?:nothing|"
    r"keeps? (?:rolling|going|moving)|doesnt stop|"
    r"wont stop|just rolls|rolls|kept going|barely|no response)",
    r"(?:pump|pumping) (?:it|em|them|the|that|my)(?: \w+)? (?:\w+ ){0,4}(?:times|before|twice|brakes?|pedal|to "
    r"stop|like crazy|hard)",
    r"(?:foot|leg|pie) (?:\w+ ){0,4}(?:to the|through the|hits? the|al|hasta el) (?:floor|carpet|mat|firewall|"
    r"metal|fondo|piso|tapete|suelo)",
    r"(?:dont|doesnt|didnt) have (?:any |much )?(?:stop|brakes?|brake pedal|stopping power)",
    r"no (?:\w+ )?(?:brakes|stopping power|pedal)(?! (?:job|work|service|needed|today|issues?|problems?|noise\w*|"
    r"squeal\w*|for me|this))",
    r"barely (?:slows|stops|slow|stop|holds)(?: \w+)?",
    r"(?:only thing|had to use|used|yank\w*|pull\w*) (?:\w+ ){0,4}(?:handbrake|hand brake|parking brake|"
    r"emergency brake|e brake)(?: to stop| saved)?",
    r"(?:meter|meterle|jalar|usar|poner|uso|meto|jalo) (?:el )?freno de mano",
    r"(?:parking|emergency|hand) ?brake was the only",
    r"freno y (?:\w+ ){0,2}(?:nada|no )\w*",
    r"(?:pise|piso|pisa|freno|frene|le doy|pisas) (?:\w+ ){0,3}(?:y|pero) (?:\w+ ){0,4}(?:nada|sigue|siguio|no "
    r"(?:hay|para|frena|agarra|responde)|se va|se fue|trono|parece)",
    r"(?:no hay|sin|no tengo|ya no hay) (?:pedal|freno|frenos)",
    r"no (?:quiso|quiere|puede|pudo|alcanza a|alcanzo a|logra) (?:frenar|parar|detener\w*)",
    r"(?:siguio|sigue|se fue|se siguio|se paso|se me paso) (?:de largo|derecho|derechito|de filo|hasta (?:la|el) "
    r"(?:banqueta|otro lado|calle)|el alto|el rojo)",
    r"no para(?=\Z|[,.!])",
    r"casi (?:\w+ ){0,2}(?:choco|choque|chocamos|pego|pegue|le pego|atropello|me mato|me estrello|me como|le doy|"
    r"me llevo|me estampo|no (?:freno|paro|alcanzo))",
    # the wheel and the steering
    r"(?:two|both|three) (?:hands|arms|people) (?:\w+ ){0,4}to (?:turn|steer|move)",
    r"(?:muscle|wrestle|fight|horse|wrestling|fighting|crank on) (?:it|with it|the wheel|the steering|her|that "
    r"wheel)(?: \w+)?",
    r"(?:turn|turned|turning) (?:the wheel|it|left|right|the steering wheel) (?:\w+ ){0,4}(?:and|but) (?:\w+ "
    r"){0,4}(?:kept going|goes straight|nothing|keeps going|doesnt turn|"
    r"didnt turn|wont)",
    r"(?:car|truck|it|van|wheel|front end|back end|rear|she)? ?(?:steers|steering|goes|drives|wanders) (?:itself|"
    r"by itself|on its own|all over (?:the|my) (?:road|lane|place))",
    r"goes sideways",
    r"tires? so bald",
    r"(?:sitting|sat|driving|riding|down|rolling) (?:\w+ )?on (?:its|the|it is|a|my) (?:bare )?rims?",
    r"(?:casi )?no (?:puedo|se puede|deja|da) (?:doblar|virar|girar|voltear|dar vuelta|moverlo)",
    r"(?:tire|tyre|llanta|goma)s? (?:just )?(?:let go|came apart|blew out|exploded|trono|reviento|exploto|se "
    r"abrio|se deshizo)",
    r"picked up (?:a|another) (?:nail|screw|bolt)",
    r"(?:clavo|tornillo|vidrio|fierro) (?:\w+ ){0,3}(?:llanta|goma|rueda|caucho)",
    r"(?:pise|agarre|traigo|trae|tiene) un (?:clavo|tornillo)",
    r"(?:front|rear|left|right) (?:loses|losing|lost|keeps losing) (?:\w+ ){0,3}(?:air|pounds|psi|lbs|pressure)",
    r"los(?:es?|ing) (?:\w+ ){0,3}(?:psi|air pressure|tire pressure|air)(?! (?:conditioning|con))",
    r"(?:one|two|three|a couple|couple|some|dos|tres|un|una|unos|faltan|falta) (?:\w+ ){0,2}(?:lug nuts?|lugs|"
    r"birlos?|tuercas)(?! (?:tool|wrench))",
    r"(?:that is|thats) (?:my|the) (?:brakes|pedal|steering) (?:today|now|lately|these days)",
    r"shredded (?:rubber|tire|tyre)",
    r"(?:sank|sunk|dropped|sits|sitting|leans?|leaning) (?:\w+ ){0,3}(?:rim|corner|one side)",
    r"(?:casi )?no (?:le queda|tiene|trae) aire",
    r"(?:metal|fierro|iron|steel) (?:con|on|contra|against) (?:metal|fierro|iron|steel)",
    # running away
    r"(?:took off|takes off|surg\w+|accelerat\w+|rev\w*|sped up|speeds up|lunges) (?:\w+ )?(?:by itself|on its "
    r"own|all by itself|for no reason|without me)",
    r"wheel (?:\w+ )?glow\w*",
    r"se (?:me )?acelera (?:\w+ )?(?:sol[oa]|de la nada)",
    r"(?:acelerador|pedal del gas|gas pedal|throttle) (?:\w+ ){0,3}(?:atora|atorado|stuck|sticks|pega|pegado|no "
    r"(?:baja|sube|regresa))",
    r"atora (?:el |mi )?acelerador",
    r"(?:rolled|rolls|rolling|roll) (?:away|backwards?|down (?:the|my) (?:drive\w*|hill|street))(?: \w+)?",
    r"wont (?:stay|hold) in (?:park|gear)",
    r"cruise (?:control )?(?:\w+ ){0,2}(?:wouldnt|wont|doesnt|stuck)(?: \w+)?",
    r"jumps? (?:\w+ )?(?:into|out of) (?:reverse|gear|drive|park|neutral|first|second|third)",
    r"(?:echa|bota|tira|saca|sale|avienta|suelta|echando|botando|tirando|sacando|saliendo) (?:un |una |mucha |"
    r"mucho |puro )?(?:nubes?|nubarron\w*|humo|humito|humareda|vapor|chispas)(?: \w+)?",
    # heat, smoke
    r"(?:runs|running|ran|getting|gets|got|so|too|real|way too) hot(?=\Z|[ ,.!](?:when|in|on|like|at|and|if|"
    r"every|lately|now|under|idling|going|climbing|again|to touch))(?! (?:outside|out|today|here|coffee))",
    r"smolder\w*",
    r"felt dizzy",
    r"(?:got|get|gets|getting|makes?) (?:\w+ ){0,3}(?:headaches?|dizzy|lightheaded|nauseous|sick) (?:\w+ "
    r"){0,3}(?:when|in the car|riding|driving|inside|from the)",
    r"(?:se (?:marea|marean)|nos mareamos|me mareo|dolor de cabeza) (?:\w+ ){0,5}(?:olor|adentro|carro|cabina|manejar)",
    r"(?:white|black|blue|gray|grey|thick) (?:clouds?|puffs?|plumes?|haze|stuff coming out)",
    r"(?:boil\w*|bubbl\w*) (?:over|out)",
    r"agua hirviendo",
    r"motor hirviendo",
    r"(?:blue|white|black|gray|grey) smoke",
    r"se (?:esta )?quem(?:a|o|ando) (?:algo|un|una|el|los|la)(?! (?:comida|cena|casa|arroz))",
    r"(?:bolsas? de(?:l)? aire|airbags?) (?:\w+ ){0,3}(?:se abri\w+|revent\w+|went off|deployed|popped|salio|"
    r"trono|prendid\w+|se prendio)",
    r"(?:stop|pull over|detengase|pare) (?:\w+ ){0,3}(?:en rojo|message|in red|in big|on the dash|safely|engine|"
    r"vehicle)",
    r"todo (?:el )?tablero (?:\w+ ){0,3}(?:rojo|prendi\w+|encendi\w+|loco)",
    r"(?:se )?(?:le |me )?(?:va|fue|baja|bajo|iba|vaya) (?:\w+ ){0,2}(?:el )?(?:pedal|freno|frenos|pie)(?: \w+){0,3}",
    r"(?:freno|frenos|pedal) (?:\w+ ){0,4}(?:bajo|baja|bajos|bajan|se va|se fue|se me va)(?! de precio)",
    r"frena (?:de un (?:solo )?lado|chueco|tarde|lejos|a medias|y no|cuando quiere)",
    r"(?:hay que|tengo que|hay q) (?:agarrar distancia|frenar (?:desde|antes|con)|pisar\w* (?:mucho|duro|hasta|"
    r"fuerte|varias)|bombear\w*)(?: \w+)?",
    r"(?:ya )?se (?:le )?(?:ve|mira|miran|ven|asoma) (?:el |la |los |las )?(?:acero|tela|alambres?|alambritos|"
    r"lona|cuerdas?|fierros?)",
)
TODAY = (
    # starting
    r"(?:turn(?:ed|s|ing)?|twist\w*) (?:the|my) key (?:\w+ ){0,6}(?:click\w*|groan\w*|nothing|buzz\w*|tick\w*|"
    r"silence|whir\w*|zip|nada|get|happens)",
    r"nothing but (?:a |some )?(?:click|clicks|clicking|buzz|grinding|groan|silence)",
    r"(?:all i (?:get|hear|got) is|just|only|nomas|nomas hace|puro) (?:a |some |an |hace )?(?:click|clicks|"
    r"clicking|clic|groan\w*|buzz\w*|silence|tic|tick\w*)",
    r"start it (?:\w+ )?(?:\w+ ){0,2}times",
    r"(?:two|three|four|five|several|few|couple(?: of)?|multiple|\d+|many) (?:tries|times|attempts|cranks|goes) "
    r"(?:\w+ ){0,2}(?:to (?:start|get it|fire|catch|crank|turn over)|before it "
    r"(?:starts?|catches|fires|cranks|turns|kicks|grabs|takes|goes))",
    r"cranks? (?:\w+ ){0,4}(?:never|wont|doesnt|not|no|nothing|forever|and crank\w*)",
    r"(?:start|crank|turn over|fire up|prender)\? (?:it |she |he )?(?:wont|doesnt|no|not|nope|wouldnt)",
    r"if (?:it|she|the car|the truck|the van) would (?:just )?(?:start|fire|crank|turn over|run|go)",
    r"some (?:days|mornings) (?:\w+ ){1,3}(?:starts?|goes|runs|cranks)?(?:,| and| but)? ?(?:some|others?) (?:\w+ "
    r"){0,4}(?:doesnt|wont|not|dont)",
    r"(?:start|engine|push|ignition) (?:button|switch) (?:\w+ ){0,2}(?:does nothing|doesnt|wont|nothing|dead)",
    r"push button does nothing",
    r"dead (?:as a|in the (?:driveway|garage|lot|parking|street|water)|at the|cell|alternator)(?: \w+)?",
    r"(?:car|truck|van|it|she|suv|everything) (?:\w+ ){0,3}(?:went|is|was|goes|completely|totally) dead",
    r"no (?:le |me )?(?:da|dio|agarra|quiere) (?:el )?(?:start|marcha|arranque|crank|encendido)",
    r"no (?:quiso|quiere|pudo|puede) (?:dar (?:marcha|start)|prender|encender|arrancar|jalar|caminar|andar)",
    r"(?:batalla|batallo|batallando|cuesta|tarda|hay que darle|le doy) (?:\w+ ){0,5}(?:prender|encender|arrancar|"
    r"encienda|prenda|arranque)",
    r"(?:dar|dan|di|dieron|pasar|pasaron|echar|echaron|necesito|ocupo) (?:\w+ )?(?:jumper|corriente|jump|cables)",
    r"ni (?:con|el|un)? ?jumper",
    r"(?:waiting (?:on|for)|need|called|calling|get|got|had|needed|pedi|esperando|llame) (?:\w+ ){0,2}(?:a |the |"
    r"una? |la )?(?:tow truck|wrecker|jump|tow|roadside|grua|flatbed)\b(?! (?:hitch|package|bar|strap))",
    r"(?:se|lo) (?:me |le |nos )?(?:quedo|quede) (?:\w+ ){0,3}(?:muert[oa]|tirad[oa]|botad[oa]|parad[oa]|"
    r"varad[oa]|en (?:la (?:escuela|calle|carretera|via|tienda)|el (?:drive|parking|camino|super)))",
    r"le quedo el carro",
    r"(?:estoy|ando|quede|estamos|andamos) (?:\w+ )?(?:tirad[oa]s?|varad[oa]s?|botad[oa]s?|parad[oa]s? en (?:la|"
    r"medio|el))(?! en (?:la cama|el sofa|un tren))",
    r"no carga (?:la |el )?(?:pila|bateria|alternador)",
    r"no da corriente",
    r"(?:me|nos) dejo (?:\w+ )?(?:a pie|tirad\w+|botad\w+|varad\w+|parad\w+)",
    r"(?:queda|quedo|quede|quea|anda|ando|anduve|vengo) sin (?:luces|lucees|direccion|faros|claxon|calaveras|stops?)",
    r"(?:en|con|llego en|traigo en|llevo en|viene en|va en|mando|mande|mandar|mandando|necesit\w+|ocup\w+|pid\w+|"
    r"llam\w+) (?:\w+ ){0,2}(?:la |una )?grua",
    r"(?:lights?|signals?|blinkers?|horn|wipers?|headlights?) (?:dont|doesnt|wont|arent|isnt|no sirven?|"
    r"quit)(?=\Z|[,])",
    # power
    r"no (?:guts|pep|oomph|get up and go|go|zip|pickup|acceleration|pull)(?: \w+)? ?(?:anymore|left|uphill|when|"
    r"at all|going|on|in)?(?=\Z|[ ,.!])(?<!no go)",
    r"(?:loses?|lost|losing|has|no|with no) (?:its |it is |all |much )?(?:breath|power|steam|pep|zip|oomph)(?! "
    r"(?:at home|in the house|windows|washer|bill))",
    r"(?:reduced|low|limited) (?:engine )?power",
    r"(?:perdio|pierde|no tiene|sin|anda sin|le falta|no trae) (?:la |mucha )?(?:fuerza|potencia|poder|compresion)",
    r"no hay (?:poder|fuerza|potencia)(?: \w+)?",
    r"no (?:sube|pasa de|corre|levanta|jala)(?: \w+)? ?(?:\d+|cuestas?|la (?:subida|rampa|loma|cuesta)|lomas?|"
    r"subidas|ni la|en la subida|mas de)",
    r"(?:it|car|truck|she|van) (?:\w+ ){0,2}crawls",
    r"(?:crawling|limping|limp|limped|limps) (?:it |along|home|there|around|in |over )\w*",
    r"\d+ (?:mph )?tops",
    r"(?:gas|fuel) mileage (?:\w+ ){0,3}(?:dropped|fell|tanked|horrible|terrible|off a cliff|way down|went down)",
    r"(?:le falta|se le va|pierde|perdiendo|se le sale|se le baja) (?:el |la )?(?:aire|fuerza)(?! acondicionado)",
    r"se (?:ahoga|calla|atasca|quiere apagar|anda apagando|apaga|apagaba|esta apagando)(?: \w+)?",
    r"quiere (?:apagar|morir|parar)(?:se)?",
    r"(?:se|te|me) (?:va|fue|voy) (?:de lado|meciendo|de un lado|sol[oa]|chuec[oa]|para (?:un|el) lado)",
    # transmission
    r"takes (?:\w+ ){0,4}seconds? (?:\w+ ){0,3}(?:to )?(?:go|engage|shift|decide|move|get|kick|catch)\w*",
    r"(?:slams|clunks|bangs|kicks|drops|jerks|thuds|jumps|pops) (?:in|into|out of|going into) (?:gear|first|"
    r"second|third|fourth|fifth|reverse|drive|park|neutral)",
    r"revs? (?:\w+ ){0,3}(?:and|but) (?:\w+ ){0,2}(?:we|i|it|the car|nothing|doesnt|dont|wont|no)(?: \w+)?",
    r"(?:no gears|no reverse|no drive|no overdrive)",
    r"(?:se queda|quedo|queda) (?:pegad[oa]|trabad[oa]|atorad[oa]) (?:\w+ )?(?:en|el|la)(?: \w+)?",
    r"(?:nomas|solo|solamente|nada mas) (?:me |le )?(?:agarra|entra|jala|tiene) (?:\w+ ){0,1}(?:reversa|primera|"
    r"segunda|tercera|drive|una velocidad|neutral)",
    r"(?:mete|entran?|cambia|pasa) (?:\w+ ){0,3}(?:cambios?|velocidad\w*|reversa|drive) (?:\w+ ){0,2}(?:con|"
    r"patada|golpe|brusco|dur\w+|tarde)(?: \w+)?",
    r"no (?:sale|entra|quiere salir) (?:de |en |a )?(?:park|reversa|drive|parking|neutral|velocidad|primera)",
    r"tarda (?:\w+ ){0,2}en (?:agarrar|entrar|meter|cambiar|responder|jalar)",
    r"(?:shifts|drives|rides|handles|steers|brakes|corners|stops|turns|idles|runs) like (?:an? |it is )?(?!dream|"
    r"champ|new|top|charm|butter|pro|glove|beauty|clockwork|kitten|swiss|plan|good|great|fun|deal|day|it|the day|"
    r"a)\w+",
    r"(?:double |have to |gotta |got to |need to )?pump(?:ing)? the clutch(?: \w+)?",
    r"(?:car|truck|it|van|she) rolls(?: \w+)?",
    r"(?:turns|drives|sounds|runs|handles|rides|stops|starts|shifts|sits|brakes|steers|tracks) (?:\w+ )?(?:funny|"
    r"weird|odd|strange|rough|wrong|crooked|bad|different|badly|terrible)",
    r"something (?:\w+ )?(?:snapped|cracked|popped|broke|gave|let go|burst|exploded|tore)(?: \w+)?",
    r"\d+ psi",
    r"(?:fill|filling|pump up|air up|put air in|adding air to|inflate|inflating) (?!the tank|my tank|it with|"
    r"gas)(?:\w+ ){1,5}(?:every|each) (?:\w+ )?(?:day|days|week|weeks|morning|mornings|time)",
    r"lost (?:all |the |my )?(?:electrics|electrical|power steering|lights|headlights|dash|instruments)(?: \w+)?",
    r"trail of (?:\w+ )?(?:drops|oil|fluid|red|drips|spots|coolant|liquid|gas)(?: \w+)?",
    r"key turns (?:\w+ ){0,2}(?:but|and)(?: \w+)?",
    r"takes? (?:\w+ ){0,3}(?:forever|ages|a while|long|longer|a long time|a minute) to (?:start|crank|fire|catch|"
    r"engage|shift|turn over|go into|slow)(?: \w+)?",
    r"(?:running|runs|hitting|firing) on (?!empty|fumes|time|schedule)(?:\w+ )?(?:cylinders?|half)",
    r"no (?:\w+ )?(?:blinkers?|headlights?|tail ?lights?|brake ?lights?|turn signals?|horn|wipers|power steering|"
    r"seat ?belts?)(?= |\Z|[.,])(?! (?:needed|issues?|problems?|bulbs?|for me|today))",
    r"windshield (?:\w+ ){0,4}crack\w*|crack (?:\w+ ){0,4}windshield",
    r"no (?:le |me )?(?:agarra|entra|mete|jala) (?:la |en |en la )?(?:primera|segunda|tercera|cuarta|quinta|"
    r"reversa|velocidad)",
    r"(?:baja|baje|bajo|low|poca) (?:la )?presion (?:del|de) aceite|presion (?:del|de) aceite (?:baja|bajo|"
    r"en)(?: \w+)?",
    # what the driver feels and thinks
    r"(?:refuses?|scared|afraid|terrified|dont dare|nervous|dont trust|hate|not comfortable|hesitant) (?:\w+ "
    r")?(?:to )?(?:drive|driving|take|move|moving|get in|ride in) (?:it|the car|her|this (?:thing|car)|that "
    r"(?:thing|car)|my car)",
    r"dont trust (?:it|the (?:brakes|car|truck|van|tires?|steering))(?: \w+)?",
    r"(?:no me atrevo|da miedo|me da miedo|tengo miedo|no me animo|ni loco|mejor no lo) (?:\w+ ){0,2}(?:manej\w+|"
    r"mover\w*|soltar\w*|us\w+|andar|subir\w*|sacar\w*)",
    r"(?:parts?|piece|something|thing|pieza|algo) (?:\w+ ){0,4}(?:fell off|fell out|came off|dropped|let go|is "
    r"dragging|hanging|se cayo|se le cayo|colgando)(?: \w+)?",
    r"se (?:le |me )?(?:cayo|solto|zafo|desprendio|aflojo) (?:algo|(?:una?|el|la|los|las) (?:pieza|parte|cosa|"
    r"manguera|banda|cables?|tapa|plastico|tornillos?|fierros?|llanta|rueda|mofle|escape|defensa|facia|motor|"
    r"flecha|eje|balero|volante|direccion|puerta|espejo|tubo|correa|polea|placa|birlos?|tuercas?))",
    r"(?:he |she |it |the wheel |its |it is )?sick\b(?=.*\b(?:cough|spit|sputter)\w*)",
    r"coughing and \w+",
    r"(?:nose ?dives|bottoms out|fishtails?|hydroplanes?|porpoises)(?: \w+)?",
    r"(?:orange|yellow|amber|red) (?:engine|motor|wrench|oil can|battery|triangle|gear|turtle|snowflake|"
    r"exclamation\w*|little \w+|thing\w*|\w+ light|\w+ shape)(?: \w+){0,2}",
    r"(?:tire|tyre|llanta)s? (?:light|one|thing|symbol) (?:\w+ ){0,4}(?:on|lit)",
    r"(?:dash|dashboard|screen|display|it|panel|pantalla|tablero) (?:says|said|tells me|shows|reads|dice|marca) "
    r"(?:\w+ ){0,4}(?:service|reduced|stop|check|warning|fault|low|oil|coolant|error|power|srs|abs|hot|overheat|"
    r"engine|pressure|limp)\w*",
    r"(?:carro|ev|car|chico|truck|van) (?:says|dice) (?:\w+ ){0,2}(?:reduced|service|stop|check|low|power)(?: \w+)?",
    r"(?:topping (?:up|off)|top(?:ped)? (?:it )?(?:up|off)|adding|add|pouring|filling|echarle|echandole|ponerle|"
    r"poniendole|rellenar|le echo) (?:\w+ ){0,3}(?:coolant|antifreeze|oil|water|fluid|agua|aceite|anticongelante|"
    r"liquido)(?: \w+){0,3} "
    r"(?:every|each|weekly|daily|a week|constantly|again|all the time|cada|diario|y se|seguido|sunday|week|a "
    r"cada|al radiador)(?: \w+)?",
    r"(?:goes|going|went|burns?|burning|drinks?|drinking|eats?|uses) (?:through )?(?:a |like |about )?(?:quart|"
    r"gallon|liter|litre)s? (?:\w+ )?(?:between|every|a|of|per|each|in)",
    r"(?:litro|galon|cuarto) (?:de aceite )?(?:a la|por|cada) (?:semana|mes)",
    r"(?:gasta|consume|se come|se chupa|quema|come|traga|consumo de|consumiendo|gastando) (?:\w+ )?(?:aceite|"
    r"agua|anticongelante|mas aceite)(?: \w+)?",
    r"se le (?:va|sale|fue|esta (?:yendo|saliendo)) (?:\w+ )?(?:aceite|agua|todo|anticongelante|liquido|gas\w*)",
    r"(?:aceite|agua|liquido) se le (?:fue|va|sale|esta)(?: \w+)?",
    r"(?:coolant|water|antifreeze|gas) in (?:the|my) (?:engine )?oil|oil in (?:the|my) (?:coolant|radiator|water|"
    r"air filter|antifreeze)",
    r"(?:agua|anticongelante|gasolina) (?:en|con) (?:el )?aceite|aceite (?:en|con) (?:el )?(?:agua|radiador|"
    r"anticongelante)",
    r"(?:quemando|tirando|gastando|consumiendo) (?:\w+ )?aceite",
    r"(?:le |se le |me le )?baja(?:ndo)? (?:el |la |el nivel de(?:l)? )?(?:nivel|aceite|agua|anticongelante|"
    r"liquido)(?! de precio)(?: \w+)?",
    r"dipstick (?:\w+ ){0,3}(?:looks like|dry|empty|nothing|milky|chocolate|low|bone|milk\w*)(?: \w+)?",
    r"(?:milky|milkshake|chocolate milk|foam\w*|mayo\w*|espuma|cafe con leche) (?:\w+ ){0,4}(?:oil|cap|dipstick|"
    r"aceite|radiator|coolant|tapon|varilla)",
    r"(?:wet|soaked|mojad[oa]) (?:\w+ ){0,2}(?:carpet|floor|passenger|floorboard|alfombra|piso)",
    r"(?:carpet|floor|floorboard|alfombra|piso) (?:\w+ ){0,4}(?:wet|soaked|mojad[oa]|encharcad[oa])",
    r"(?:wet|slick) (?:patch|spot|stuff)(?: \w+)?",
    r"(?:leaving|leaves) (?:\w+ ){0,2}(?:spots|puddles|drips|stains|trails?|marks)(?: \w+)?",
    r"(?:parking|driveway|garage|cochera) (?:\w+ ){0,4}(?:oil|stain|puddle|mancha|aceite)",
    r"(?:salen|sale|cae|caen) (?:\w+ )?(?:gotas?|chorros?|chorrito|liquido|agua|aceite)",
    r"amaneci[oa]? (?:\w+ )?(?:el |la |un |una |con )?(?:charco|mancha|vacia|ponchada|muert[oa]|sin)(?: \w+)?",
    r"(?:sounds?|sounding|sounded) (?:\w+ ){0,2}like (?:it is |its |an? |the |my |someone |somebody )?(?:\w+ "
    r"){0,3}(?:bag|can|cans|jet|planes?|airplane|helicopter|tractor|mower|motorcycle|machine|gun|gunshots?|"
    r"races?|racer|race car|marbles|rocks?|gravel|nails|pig|pigs|dying|animals?|bees?|crickets?|birds?|whistle|"
    r"kettle|metal|grinding|sandpaper|coins?|chains?|maracas?|train|tank|popcorn|grinder|blender|vacuum|diesel|"
    r"loose|falling apart|going to (?:fall|blow|explode|die)|rattle|rattlesnake|drum|drums|hammers?|bowling|saw|"
    r"chainsaw|boat|ghost|door|hinge|monster|whale|cow|cat|cats|dog|lion|coyote|wolf|baby|tin|bolts|screws|"
    r"spoons?|forks?|dishes|silverware|pots|pans|fan|typewriter|roller coaster|submarine)",
    r"(?<!me )(?:suena|sonando|se oye|se escucha|suene) (?:\w+ ){0,1}(?:como|a|igual que) (?!que |buen|bien|"
    r"estafa|plan|trato|fraude|cuento|mentira|mucho|muy|que si|las? \d|los? \d|gusto)\w+(?: \w+)?",
    r"lo que suena",
    r"ruid(?:it|ill|az|ot)os?",
    r"(?:chorrea|chorreando|escurre|escurriendo|gotee|humee|humean|vibren?|tiemblen?|rechinen?|truenen?)(?: \w+)?",
    r"(?:it|she|he|car|truck|van|thing|suv|something|steering|front end|back end|rear|front|wheel|engine) "
    r"(?!never |not |no )(?:\w+ )?(?:roars|groans|moans|howls|growls|hums|whines|clunks|clanks|rattles|squeals|"
    r"squeaks|screeches|chirps|grinds|pops(?! up)|ticks|clicks|knocks|hisses|gurgles|whistles|rumbles|buzzes|"
    r"creaks|crunches|shakes|shudders|vibrates|wobbles|shimmies|pulls|drifts|wanders|leaks|drips|smokes|stalls|"
    r"surges|hesitates|lurches|jerks|bucks|slips|sputters|overheats|bounces|veers|thumps|thuds|bangs|trembles|"
    r"weaves|sways|misfires|backfires|steams|scrapes|rubs)(?! my)(?: \w+)?",
    r"(?:it|she|he|car|truck|van|brakes?|engine|wheel) (?:does|did|do|can|will|started to|starts to|tends to|"
    r"seems to|begins to|likes to|wants to) (?:\w+ )?(?:whine|rattle|shake|squeak|squeal|grind|groan|hum|click|"
    r"clunk|knock|pull|drift|vibrate|wobble|leak|drip|smoke|stall|shudder|hesitate|jerk|slip|roar|howl|hiss|"
    r"creak|pop|thump|buzz|moan|growl|overheat|wander|bounce|lurch|buck|shimmy|tick|whistle|chirp|screech|bog|"
    r"weave|die|quit|grab)(?: \w+)?",
    r"(?:idle|idles|idling) (?:\w+ )?(?:hunts|jumps|surges|up and down|bounces|lopes|rough|all over)(?: \w+)?",
    r"key (?:wont|doesnt) (?:turn|go)(?: \w+)?",
    r"(?:lope|misfire|stumble|hiccup|flutter|skip|shake)s? (?:at|when|on) (?:idle|idling|acceleration)(?: \w+)?",
    r"(?:llanta|goma|rueda)s? (?:\w+ ){0,3}(?:inflad[oa]|embarazada|panzona|hinchada)(?: \w+)?",
    r"jitterbug\w*|does (?:the|a) (?:jitter\w*|dance|shimmy|shake|wobble)(?: \w+)?",
    r"(?:started|starts?|keeps?|began|beginning|been|is|its|was|are|still|kept) (?:to )?(?!not |no |never |isnt "
    r")(?:\w+ )?(?:roar|groan|moan|howl|growl|humm?|whin|clunk|clank|rattl|squeal|squeak|screech|chirp|grind|"
    r"tick|click|hiss|gurgl|whistl|rumbl|creak|crunch|shak|shudder|vibrat|wobbl|shimmy|drift|wander|leak|dripp|"
    r"smok|stall|surg|hesitat|lurch|jerk|buck|slipp|sputter|overheat|bounc|veer|thump|trembl|weav|sway|misfir|"
    r"backfir|steam|scrap|grumbl)ing(?: \w+)?",
    r"(?:the|that|this|some|more|same|awful|weird|loud|funny|any|new|bad) (?:\w+ )?(?:rumbling|humming|groaning|"
    r"moaning|howling|growling|whining|clunking|clanking|rattling|squealing|squeaking|grinding|ticking|clicking|"
    r"hissing|creaking|crunching|shaking|shuddering|vibrating|wobbling|knocking|thumping|scraping|whistling|"
    r"buzzing|clunk|clank|rattle|squeal|squeak|groan|hum|whine|shimmy|shudder|wobble|vibration|screech|thump|"
    r"hiss|grumble|rumble)(?: \w+)?",
    r"(?:hasnt|havent|didnt|doesnt) (?:\w+ )?(?:made|make|done|heard|hear) (?:the|that|it|its) (?:\w+ )?(?:sound|"
    r"noise|thing|again)?(?: in| for| since| lately| today| this)(?: \w+)?",
    r"mine (?:just )?(?:burst|snapped|leaks|squeals|grinds|buzzes|clicks|quit|died|smokes|shakes|rattles|is "
    r"(?:leaking|smoking|grinding|loose|flat|dead))(?: \w+)?",
    r"(?:making|makes|make|made|doing|does|hace|haciendo|trae) (?:\w+ ){0,3}(?:noise|sound|racket|ruido|ruidito|"
    r"ruidillo|sonido|chillido|ruidazo)s?",
    r"hace(?:n)? (?:como )?(?:un )?(?!cita|falta|rato|tiempo|poco|mucho|anos?|dias?|dos|tres|mes|meses|semanas?|"
    r"frio|calor|unos?|la|el|que|como|bien|uno|buen|casi|apenas|media|\d)\w{2,8} (?:el|la|las|los) (?:direccion|"
    r"llantas?|ruedas?|motor|carro|frenos?|troca|timon|volante|transmision)",
    r"(?:the|that|a|this|some|its|from the) sound it makes",
    r"(?:holes?|hoyo|bache) (?:\w+ ){0,6}(?:chuec\w+|crooked|bent|doblad\w+)",
    r"hit (?:a|the|my|something) (?:\w+ )?(?:pothole|curb|deer|kerb|bump|debris)",
    r"(?:clipped|kissed|jumped|smacked|caught|bumped) (?:a|the) (?:curb|kerb|pothole|guardrail|parking block)",
    r"(?:drove|went|driving) through (?:\w+ )?(?:deep |high |flood\w* |standing )?(?:water|flood\w*)",
    r"(?:tie rod|ball joint|control arm|axle|rotula|terminal) (?:\w+ ){0,3}(?:hanging|snapped|broke|gone|shot|"
    r"loose|bad|about|thread)",
    r"(?:front|both|one) (?:\w+ )?wheels? (?:\w+ ){0,2}(?:looks?|looking|points?|pointing) (?:\w+ ){0,2}(?:left|"
    r"right|wrong|different|out|in|the other|inward|outward)",
    r"las luces (?:\w+ )?(?:bajan y suben|suben y bajan|parpadean|bajan|se bajan|brincan)",
    r"(?:doesnt|dont|dosent|not|no longer) (?:\w+ )?(?:feel|sound|drive|ride|handle|run|sit|track) (?:right|"
    r"straight|the same|normal|good|safe|well)(?: \w+)?",
    r"(?:it|car|pedal|wheel|stick|brakes?|steering|ride|truck|van|seat|floor|rear|front|end|shifter|clutch|"
    r"tires?) (?:\w+ ){0,2}(?:feels?) (?:\w+ ){0,1}(?:like|as if)(?: \w+){1,3}",
    r"(?:siento|se siente|sentir) (?:\w+ ){0,2}(?:como|que) (?:si |va |se |la |el |algo |con )\w+(?: \w+)?",
    r"(?:horn|seat ?belts?|wipers?|defrost\w*|airbag|air bag|blinkers?|headlights?|turn signals?|claxon|cinturon|"
    r"limpiadores|limpiaparabrisas) (?:\w+ ){0,3}(?:quit|doesnt work|dont work|wont|stopped|not working|dead|no "
    r"sirven?|no jalan?|no funcionan?|no prenden?|no agarra|cut out|stuck|went out)",
    r"(?:lights?|luz|luces) (?:\w+ ){0,4}(?:no sirven?|no prenden?|no encienden?|no alumbran?|no funcionan?)",
)
