"""What takes a report of a fault away: denied, repaired, only supposed, another thing's, or of a car that is gone."""

from __future__ import annotations

import re

from followup.core.replies.fault_causes import CURE, came_with_repair
from followup.core.replies.fault_idioms import IDIOMS
from followup.core.replies.fault_words import OTHERS
from followup.core.replies.said import branches
from followup.core.replies.words.entry import word_set

HARMLESS = branches(
    r"(?:sorry|perdon\w*|disculp\w+) (?:(?:about|bout|for|por|all) )?(?:the |el |este )?(?:noise|ruido)(?! (?:que |"
    r"my |al |cuando|"
    r"when|in my|from my|de mi|del (?:carro|coche|motor)))(?: (?:de los|de las|de mis|of the|from the) (?!llantas?|"
    r"frenos?|brakes?|"
    r"tires?|engine)\w+)?|(?:perros?|gatos?|bebe|kids?|dogs?|baby|toddler) (?:are |is )?(?:making|haciendo|hacen?) "
    r"(?:mucho |so much |a lot of |"
    r"some )?(?:noise|ruido)|make some noise|(?:lo|la) choque,? (?:y )?ya no (?:existe|lo tengo|la tengo|sirvio|quedo)|"
    r"(?:will|would|could|is|are|gonna) (?:it|they|this|that|my \w+) (?:\w+ ){0,3}(?:break down|die|"
    r"fail|leak|overheat|stall|leave me stranded)(?: on me)?|flat tire on (?:\w+ ){0,3}(?:bike|"
    r"bicycle|trailer|stroller)|se (?:lo|la) "
    r"llevo la grua|(?:quit|quitting|stop|stopped|no|second ?hand|gave up) smoking|smok(?:ed|ing) (?:brisket|"
    r"meat|ribs|pork|gun|hot)|"
    r"smok(?:e|ing) (?:weed|pot|cigar\w*|breaks?)|"
    r"drip coffee|no smoking|smoke (?:free|test|signals?|shop)|(?:love|enjoy|hate|fun|spending|spend) (?:\w+ "
    r"){0,3}smelling|(?:circled|marked|highlighted|printed|written|underlined) in (?:red|orange|yellow)|humo "
    r"(?:que|de) (?:\w+ ){0,4}(?:verificacion|smog)|prueba de humo|(?:oliendo|huele|olor|apesta|smell\w*|"
    r"stink\w*|reek\w*) (?:\w+ )?(?:a|of|like) (?:cigar\w*|tabaco|mota|perfume|weed|tobacco|fries|feet|wet dog|"
    r"febreze|vomit|pizza)|(?:smoke|haze|humo) (?:\w+ )?(?:from|de) (?:the |los |las |el |la |my |mi )?(?:wild "
    r"?fires?|fires|incendios?|quemas?|grill|bbq|neighbors?|vecin\w+|canada|hills|asado|carne)|wild ?fires?|"
    r"incendios? (?:forestales|en|de)|apagando incendios|golpe (?:en|de) (?:la|el) (?:salpicadera|puerta|pintura|"
    r"defensa que)|^\W*knock knock\W*$|me quede (?:parad|atorad|atascad)\w+ (?:en|por|detras de) (?:un|el|la) "
    r"(?:tren|trafico|tranque|fila|junta|embotellamiento|caseta|trafico)|(?:camion|carro|troca|trailer) de "
    r"(?:adelante|enfrente)|(?:truck|car|van|bus|guy) (?:in front of|ahead of) (?:me|us)|fire (?:away|when ready|"
    r"me|you|him|her|drill|works)|youre fired|"
    r"got fired|on fire sale|fuego artificial\w*|fireworks?|leak ?proof|traffic (?:is |"
    r"was )?(?:crash|accident)|there(?:s| is| was) (?:an|a) (?:accident|crash|wreck) on|"
    r"accident on (?:the|i|hwy|highway|route)|hay un (?:accidente|choque) (?:en|adelante)|"
    r"accident ahead|wreck on|(?:hit |every |at (?:a|the|every) |caught )(?:\w+ )?red lights?|(?:kids|traffic|"
    r"boss|phone) (?:made|was)|"
    r"shake on it|shak(?:e|ing) my head|smoking deal|(?:smoke|carbon monoxide) (?:detectors?|alarms?)|(?:red|"
    r"rojo) light (?:camera)|"
    r"stuck (?:in|at|behind|with)(?! (?:park|gear|drive|reverse|neutral|first|second|third|the middle|my "
    r"driveway|the road))|"
    r"phone (?:is |just |was )?(?:died|dead|dies)|my phone (?:died|"
    r"quit|is dead)|(?:cant|couldnt|wont|dont|didnt) stop (?:by|in (?!time)|laughing|over|at (?!the (?:light|sign|"
    r"stop|red|line|corner)|a (?:light|red|stop)|all)|being|smil\w+|"
    r"think\w+|talk\w+|laughin|worry\w*)|"
    r"dont stop (?:by|in|being|believing|now|them|it)|dont stop(?=\Z|[.,!])|hot ?dogs?|"
    r"cat sounds|warning you|price increase|fallando (?:a|en) (?:la )?cita|the crash course|"
    r"baja (?:mucho )?la temperatura (?:hoy|afuera|manana)|out of gas|vapor rub|temblor de|"
    r"on fire today|fire department|fire (?:station|sale)|"
    r"flat(?:tened| out)? (?:broke|refuse\w*|no|dont|rate|fee|price)|crashed and burned|crash(?:ed|ing)? (?:on "
    r"(?:the|my|a) (?:couch|sofa|bed)|at "
    r"(?:my|a|his|her|the)|early|out|the party|course|diet)|(?:scrap|scrape|scraping|shake|shaking) (?:up|(?:\w+ "
    r")?out of)(?: \w+ (?:money|cash|funds))?|"
    r"pit stops?|you(?: guys| people|all)? (?:ruined|damaged|broke|scratched|cracked|dented|bent|ripped|tore)|"
    r"only ever got towed|ping (?:me|us|you)|(?:my|his|her) (?:hands?|legs?|head|voice|stomach|nerves) (?:are|is|"
    r"were|was|keep|keeps) (?:\w+ )?(?:shaking|shaky|hurting|killing)|smoking (?:mad|hot)|noisy (?:party|kids|"
    r"neighbors?|office|place|here)|(?:ninos|hijos|vecinos|chamacos|perros|nietos) (?:\w+ ){0,2}(?:hacen|"
    r"haciendo) (?:\w+ )?ruido|rear ended by life|(?:neighbor|cousin|buddy|friend|coworker|uncle|roommate|"
    r"nephew) (?:\w+ )?(?:crashed|wrecked|totaled) (?:his|her|their)|(?:vecin[oa]|prim[oa]|compadre|cunad[oa]|"
    r"amig[oa]|sobrin[oa]|tio) (?:choco|estrello) (?:su|el suyo)|humo (?:\w+ ){0,6}(?:asado|carne|parrillada)|"
    r"(?:check|look|inspect)\w* (?:\w+ ){0,2}for (?:any )?(?:leaks|noises|cracks|recalls|wear|rust|problems)|"
    r"(?:do|can) you (?:guys )?(?:do|fix|repair|patch) (?:flats|flat (?:tire )?repairs?|punctures)|power (?:is|"
    r"was|went|has been) (?:out|off)|power outage|what (?:noises?|sounds?) (?:would|do|does|should|will) (?:\w+ "
    r"){0,3}|(?:will|would|are) (?:the|new|these|those|my) (?:\w+ ){0,3}(?:noisy|loud|squeak|leak|fail|wear)|"
    r"(?:do|does|did|doing|change|changed|changing) (?:\w+ ){0,2}oil|(?:me )?echo humo el (?:camion|trailer|bus|"
    r"carro)|buzz (?:me|you|us|off|in|the|from)|(?:a|me a|us a) buzz\b(?! (?:from|in|when|at|coming|under))|give "
    r"(?:me|us|him|her) a (?:buzz|ring|knock|shout)|"
    r"knock(?:ed)? (?:it )?(?:out|off|on (?:the|your|my) door)|knock on wood|pop(?:ping)? (?:in|by|over|into)(?! "
    r"(?:gear|second|third|first|reverse|neutral))|"
    r"(?:about|ready) to pop|squeez(?:e|ed|ing) (?:me|us|it|in)|(?:scraping|scrape) (?:ice|the ice|snow|frost|"
    r"by)|no sweat|"
    r"rings? a bell|rub(?:bed)? (?:it in|me the)|hit the (?:road|sack|gym|hay)|break(?:ing)? the bank|gave me "
    r"the runaround|"
    r"(?<!light )(?<!lights )(?<!bulb )(?<!bulbs )(?<!lamp )(?<!lamps )(?<!is )(?<!are )burn(?:ed|t)? (?:out|me|"
    r"through (?:cash|money))|money leak|spark plugs?|vibrator|buenas? vibras?|malas? "
    r"vibras?|vibes?|"
    r"dead(?:line|lines| tired| broke| serious| set| end)|(?:died|dying) (?:laughing|to|of)|to die for|me muero "
    r"de|muert[oa] de|"
    r"se murio (?:mi|el papa|la mama|un|una|su) (?!carro|troca|motor|bateria|coche|auto|camioneta|pila)\w+|se "
    r"quedo (?:con|alla|en) "
    r"(?:el|la|guatemala|mexico)(?= en| con|\Z)|en el divorcio|airbag recall|recall (?:\w+ )?air ?bags?"
)

_NEGATORS = word_set(
    "no not without isnt doesnt didnt never arent wasnt werent havent hasnt dont nor zero sin ningun ninguna nunca ni"
    " nothing any cero hardly_any tampoco nada dejo aint nomore none stopped quit"
)
_NOT_NEGATING = word_set("sure only just longer more mas matter wonder kidding idea")
_CROSSED = word_set(
    "been had made a an any hay hace hacen have having hear heard hearing see seen seeing feel felt notice "
    "noticed noticing"
    " show showing tiene tengo veo escucho siento trae traen se me longer really weird strange bad such making "
    "make sign"
    " signs of warning other check engine funny new luces de or ni y leak leaks noise noises vibration vibrations smoke"
    " shaking ruido ruidos fuga fugas otro otra red light lights esta issue issues problem problems with and le "
    "del algun"
    " alguna kind ever even once pull pulls pulling shake shakes squeak squeal grind rattle brake brakes tire tires oil"
    " one single at all is it getting or nor smell smells drip drips hum clunk humo gotas goteras vibraciones "
    "nada hacer"
    " do does doing haciendo oigo oye oyen escucha siente nunca prendido prendida prendidos luz foco focos "
    "ningun ninguna"
    " smelled smelling smells leaking anymore un una uno vibra tiembla jala rechina rechinan suena suenan truena "
    "huele tira gotea more"
)
_ANSWERS_BEFORE = word_set("the my el la mi los las it its i he she they lo")
_CLAUSE_EDGE = re.compile(
    r",| - |\b(?:but|pero|because|porque|except|aunque|although|and it|and the|and now|so|then|y (?:se|el|la|me|los))\b"
)
_CURED = re.compile(r"\b" + CURE + r"\b")
_CURING = re.compile(
    r"\b(?:fixed|repaired|replaced|solved|resolved|patched|plugged|cured|stopped|stopping|fixing|took care of|"
    r"taking care of|getting rid of|"
    r"got rid of|arreglaron|arreglo|arregle|repararon|reparo|quitaron|compusieron|parcharon|cambiaron|"
    r"(?:acab\w+ de|despues de|gracias por|mande a?|hice|hicieron) (?:arreglar|quitar|reparar|cambiar|"
    r"componer)(?:le|me|lo)?|dejo de|"
    r"dejaron de) (?:(?:the|that|this|my|all|le|el|la|los|las|ese|esa|mi|lo|de|del|me|up) "
    r"?){0,3}(?:(?!y |pero |and |but )\w+ )?$"
)
_OVER = re.compile(
    r"^(?:\W|\w+ ){0,4}?(?:is|are|was|s|es|esta|ya|se|its|has)? ?(?:history|cured|all gone|gone(?= (?:since|"
    r"thanks|now that|after|for good|away since|"
    r"because|now my|with the new|with new|thanks))|no more|thing of the past|quedo (?:de lujo|perfecto|listo|"
    r"como nuevo)|"
    r"desaparecio (?:con|desde|despues)|never came back|(?:went|is|has gone|was gone) (?:away )?(?:after|since|when|"
    r"once) "
    r"(?:you|yall|they|he|the (?:repair|visit|service|new|fix))|se (?:acabo|quito|fue) (?:con|cuando|desde))\b"
)
_BEFORE_NOW = re.compile(r"\b(?:antes|used to|before you \w+ it|before it used to)(?: \w+){0,2} ?$")
"""What was so once: `antes rechinaba`."""
_AT_THE_TIME = re.compile(r"\b(?:when|after|because|where|the day|cuando|despues de que|porque)(?: \w+){0,3} ?$")
"""How a repair tells its reason: `a new battery when it died`."""
_SAID_BY_US = re.compile(
    r"\b(?:(?:why|what|how come) (?:are|do|did|would|does) (?:you|u|he|they) (?:say|saying|think|mean)|(?:you|he|"
    r"she|they|yall) (?:guys )?(?:meant|mean) by|"
    r"(?:you|u|your (?:guy|text|report|message|tech|sheet)) (?:guys )?(?:said|says|say|wrote|claim|claims|"
    r"mentioned)|(?:ustedes|me) (?:dicen|dijeron|pusieron) que|"
    r"por que dicen que)\b[^,]{0,40}$"
)
"""Words before what we ourselves told, which the customer only asks about."""
_JOKED = re.compile(
    r"\b(?:the only (?:thing|one|part)|la que|el que|lo que|la unica|lo unico|el unico|el del|la del)\b[^.,]{0,40}$"
)
_OF_ME = re.compile(
    r"^[^.,]{0,40}\b(?:es|soy|son|is|are|am|was|would be) (?:yo|me|my (?!car|truck|van|brakes|tires|engine)|mi "
    r"(?!carro|coche|troca|camioneta|llanta|motor))\w*"
)
"""`the only thing leaking is my roof`: it is told of a car that nothing is wrong with."""
_PRAISED = re.compile(
    r"\b(?:quedo (?:de lujo|perfecto|muy bien|bien|como nuev[oa]|al (?:100|cien|tiro))|thanks to you|dry as a "
    r"bone|quiet as a?|"
    r"chulada|bien bonito|que bonito|una joya|de pelos|a todo dar|quedo chido|(?<!no )(?<!no me )(?<!no le )(?<!no "
    r"se )frena (?:muy "
    r")?bien|(?<!no )(?<!no me )(?<!no le )(?<!no se )jala (?:muy )?bien|like new|(?:i |im )lov(?:e|ing) it|(?:buen|"
    r"excelente) (?:jale|trabajo)|purrs|runs like a "
    r"(?:dream|top|champ)|smooth as)\b"
)
_AGAIN = re.compile(
    r"\b(?:still|again|not (?:fix|repair)\w*|didnt (?:fix|help|last)|wasnt fixed|never fixed|isnt fixed|needs?|"
    r"need to|have to|had to|has to|"
    r"wants?|get it|can you|could you|please|(?<!never )came back|is back|right back|come back|back now|todavia|"
    r"sigue|siguen|otra vez|aun|"
    r"no (?:lo |la |me lo )?(?:arregl|repar)\w*|puedo|pueden|necesito|worse|going to|gonna|must|should|(?:and|"
    r"but) now (?:it|the|theres|there|"
    r"im|i hear)|pero ahora|y ahora|ahora (?:hace|trae|suena|truena|vibra|tiembla)|como quiera|de todos modos|de nuevo|"
    r"(?:but|pero)(?! (?:\w+ ){0,3}(?:new (?:one|ones|tires?|set|battery)|nuev[oa]s?|fixed|repaired|replaced|patched|"
    r"solved|took care|plugged|arregl\w+|"
    r"repar\w+|compus\w+))|"
    r"how (?:much|long)|cuanto|keeps?|keep getting|want it|get (?:that|this)|quiero)\b"
)
_SUPPOSED = re.compile(
    r"\b(?:till|til|until|unless|hasta que|a menos que)\b(?! (?:now|today|this)\b)(?: \w+){0,5} ?$|"
    r"\b(?:what (?:happens|would happen) (?:if|when)|what if|que pasa si|in case|por si|no vaya a|before (?:it|"
    r"the|they|something|anything)|"
    r"dont want (?:it|the|to be|them|to get|to end up)|antes de que|rather than|instead of)\b(?: \w+){0,5} ?$"
)
_IF = re.compile(
    r"\b(?:(?:if|should|whenever|once|when|the day) (?:it|the|anything|something|she|they|that|my|any|one|ever|"
    r"things?|he|a|i (?:hear|notice|see|feel|smell))"
    r"\b|(?:si|cuando) (?:algun dia|llega|empieza|empiezan|le|algo|oigo|noto|veo|hace|el carro|la troca|se|un "
    r"dia|truena|acaso)\b)(?: \w+){0,6} ?$"
)
_THEN = re.compile(
    r"\b(?:ill (?:be sure|call|let|text|holler|reach|come|shout|bring|give|contact|drop|swing|ring|know|buzz|"
    r"get)|(?:i|we) (?:will|would) (?:call|let|text|"
    r"holler|reach|come|shout|bring|contact|give|be|get)|id (?:call|let|bring|come|text|know|reach)|let (?:you|"
    r"yall|u) know|i know (?:where|who)|you are the first|"
    r"youll be the first|youll hear|call you|les (?:aviso|llamo|marco|hablo|digo)|le (?:aviso|llamo|marco|hablo)|"
    r"yo (?:les|le) (?:aviso|hablo|marco|"
    r"llamo)|los busco|ahi los|ahi le|entonces (?:si|lo)|te aviso|voy con ustedes|lo llevo|los llamo)\b"
)
_LOOKS_BACK = re.compile(
    r"\b(?:caught fire|burned up|burnt up|went up in flames|blew up) (?:\w+ ){0,2}(?:last (?:year|summer|winter|fall|"
    r"spring)|"
    r"(?:years?|months?) ago|in 20\d\d)\b|"
    r"\b(?:totaled|totalled|total loss|scrap ?yard|junk ?yard|scrapped|junked|salvage|wrote it off|written off|"
    r"(?:sold|traded|got rid of|donated|gave) (?:it|her|him|that|"
    r"the (?:car|truck|van)|them)|charity|tax write ?off|had to let (?:the|it|her)|perdida total|total loss|"
    r"(?:lo|la) vendi|(?:vendi|vendimos|sold|traded|junked|scrapped) (?:in )?(?:el |la |mi |my |the |that |our "
    r")?(?:carro|troca|camioneta|coche|car|truck|van|suv)|(?:lo|la) vendimos|"
    r"(?:mejor|ya) (?:lo|la) vendi|chatarr\w+|yonke|deshuesadero|pa(?:ra)? guatemala|en el divorcio|puro fierro|"
    r"aseguranza (?:nos|me) dio|"
    r"(?:nos|me) dio el cheque|(?:lo|la) (?:choque|chocaron|choco \w+) y (?:fue|quedo|lo|la)|(?:fue|was a) \w+ "
    r"loss|se hizo acordeon|(?:el )?(?:seguro|aseguranza) (?:\w+ ){0,2}(?:pago|dio|recogio|cubrio|llevo)|ya no existe|"
    r"insurance (?:\w+ )?(?:paid|took|wrote|totaled|has it)|burned (?:down|to the ground|up completely)|"
    r"(?:caught fire|burned|wrecked|crashed|engine blew|blew up)[^.!?]*(?:its|it is|shes|hes) (?:long )?gone|lo "
    r"remate|lo regale)\b"
)
_ONE_MORE = re.compile(
    r"\b(?:the|my|our|this|mi|el|la) (?:\w+ )?(?:car|truck|van|suv|sedan|jeep|carro|troca|camioneta|coche)\b"
)
"""Another car, told of after the one that is gone."""
_PRESENT = re.compile(
    r"\b(?:still (?:have|drive|driving|making|makes|mine|here)|other (?:car|truck|van|one)|the new one|my new|"
    r"but the|but my|this one|todavia|el otro|la otra|el nuevo|la nueva|pero (?:el|la)|"
    r"ahora (?:el|la|traigo)|now (?:the|my|driving|have))\b"
)
_WIPER = re.compile(
    r"\b(?:wipers?|blades?|limpia(?:s|parabrisas|brisas|vidrios|dor|dores)?|plumas|plumitas|plumillas|escobillas)\b"
)
_WIPER_NOISE = re.compile(
    r"squeak|squeal|nois|chatter|streak|screech|rechin|chill|chirri|ruido|scrap|judder|shudder|vibra|grind|rubber"
)
_OTHER = re.compile(r"\b(?:" + "|".join(word.replace("_", " ") for word in OTHERS.split()) + r")\b")
_LIKENESS = re.compile(r"\b(?:like|than|as|como|parece|igual que|que (?=una?\b))\b")
_OF_A_CAR = re.compile(
    r"\b(?:cars?|trucks?|van|suv|vehicle|engine|motor|brakes?|tires?|wheels?|transmission|exhaust|tailpipe|"
    r"steering|dash|hood|driving|drive|"
    r"carro|coche|troca|camioneta|llantas?|frenos?|volante|cofre|escape|mofle|auto|it|pedal|muffler|trunk)\b"
)
_BEFORE = 24


def is_harmless(plain: str) -> bool:
    """Whether words of a fault stand in it that are none."""
    return bool(HARMLESS.search(plain) or IDIOMS.search(plain))


def cleaned(plain: str) -> str:
    """The text with blanks for words of a fault that are none."""
    for harmless in (IDIOMS, HARMLESS):
        plain = harmless.sub(lambda match: " " * len(match.group()), plain)
    return plain


def is_denied(clause: str, start: int, is_repaired: bool = False) -> bool:
    """Whether a `no` before this place reaches it; what is no longer so counts as denied only beside a repair."""
    left = clause[max(0, start - 70) : start]
    words = re.findall(r"[a-z]+|\d+", _CLAUSE_EDGE.split(left)[-1])
    before = ""
    for number, word in enumerate(reversed(words)):
        if number > 7:
            return False
        if word in _NEGATORS and before not in _NOT_NEGATING:
            follows = before or clause[start : start + 8].split(" ")[0]
            behind = words[len(words) - number :][:2]
            is_answer = word == "no" and follows in _ANSWERS_BEFORE
            is_answer = is_answer or (word == "not" and behind[:1] == ["really"] and behind[-1] in _ANSWERS_BEFORE)
            is_past = word == "no" and len(words) > number + 1 and words[-number - 2] == "ya"
            is_stopped = word in ("stopped", "quit", "dejo")
            return not is_answer and (is_repaired or not (is_past or is_stopped))
        if word not in _CROSSED and not (word == "que" and words[: -number - 1][-1:] == ["sin"]):
            return False
        before = word
    return False


_DONE_BEFORE = re.compile(
    r"\b(?:(?:got|get|had|have|getting) it (?:done|fixed|replaced|repaired|handled)|(?:me )?(?:lo|la) (?:hicieron|"
    r"arreglaron|cambiaron|"
    r"hice arreglar|tuve que arreglar))\b[^.!?]*(?:,|because|cause|since|after|when|porque|cuando|es que) ?(?:\w+ "
    r"){0,4}$"
)
_ONCE = re.compile(
    r"\b(?:snapped|broke|died|blew|quit|failed|went|burst|cracked|seized|blown|rompio|poncho|apago|quemo|trono|murio|"
    r"fallo)\b"
)


def is_cured(plain: str, start: int, end: int, fault: int) -> bool:
    """Whether what stands here was repaired: told after it, or as what was repaired."""
    if came_with_repair(plain, start, end):
        return False
    rest = re.split(r"[.!?;\n]", plain[end:])[0]
    if _ONCE.search(plain[start : end + 8]) and _DONE_BEFORE.search(plain[:start]) and not _AGAIN.search(rest):
        return True
    if _CURING.search(plain[max(0, start - 60) : start]):
        return not _AGAIN.search(plain[start:])
    after = plain[fault:]
    if _AGAIN.search(after):
        return False
    if _OVER.match(plain[end:]) or _CURED.search(after) or _PRAISED.search(after):
        return True
    last_word = max(fault, plain.rfind(" ", 0, end) + 1)
    before = re.split(r"[.!?;\n]", plain[:last_word])[-1]
    return bool(_AT_THE_TIME.search(before)) and bool(_CURED.search(before))


_GLAD = re.compile(
    r"\b(?:content[oa]|satisfech[oa]|feliz|muy buen trabajo|buen trabajo|gracias a ustedes|mucho mejor|happy "
    r"with|love it|great job|good job|thanks to you|much better|good work|al cien)\b"
)


def tells_of_repair(plain: str) -> bool:
    """Whether a repair stands anywhere in it, or that all is well, and nothing that came after."""
    return bool(_CURED.search(plain) or _PRAISED.search(plain) or _GLAD.search(plain)) and not _AGAIN.search(plain)


def is_a_joke(plain: str) -> bool:
    """Whether the words of a fault are a joke beside a car that is well."""
    return bool(_LAUGHS.search(plain)) and bool(_CAR_IS_WELL.search(plain))


_LAUGHS = re.compile(r"\b(?:ja(?:ja)+|jeje|lol|haha|lmao)\b")
_CAR_IS_WELL = re.compile(
    r"\b(?:mi|el|la) (?:carro|troca|camioneta|coche) (?:no (?:sale|tira|hace|trae|tiene) nada|(?:esta|anda|va) "
    r"(?:muy )?bien)|"
    r"(?:my|the) (?:car|truck|van) (?:is|runs|drives) (?:just |doing )?(?:fine|great|good|perfect)|not the car|"
    r"no el carro"
)


def is_supposed(plain: str, start: int, fault: int) -> bool:
    """Whether it is only supposed: `if it starts shaking, I'll call`."""
    left = plain[max(0, start - 80) : start]
    sentence = re.split(r"[.!?;\n]", left)[-1]
    if _SUPPOSED.search(sentence) or _BEFORE_NOW.search(plain[:fault]):
        return True
    return bool(_IF.search(sentence)) and bool(_THEN.search(plain))


_ASKS = re.compile(r"^\W*(?:\w+ ){0,3}?(?:what|why|how|is|are|que|cual|como|por que)\b")
_ON_PAPER = re.compile(
    r"\b(?:on|in|from|of) (?:your|the|my|that|this) (?:report|sheet|list|paper|inspection|estimate|printout|text|"
    r"message|video|picture)\b|"
    r"\b(?:en|de|del) (?:su|el|la|mi) (?:reporte|hoja|lista|papel|inspeccion|presupuesto|mensaje|video)\b"
)


def is_what_we_told(clause: str, start: int) -> bool:
    """Whether it only repeats what we told, to ask about it."""
    left = re.split(r"\b(?:but|pero|and now|y ahora)\b", clause[:start])[-1]
    return bool(_SAID_BY_US.search(left)) or (bool(_ON_PAPER.search(clause)) and bool(_ASKS.search(clause)))


def is_of_a_bike(plain: str) -> bool:
    """Whether it tells of a bicycle, whose wheels and brakes are no car's."""
    own = _LIKENED.sub(" ", plain)
    return bool(_BIKE.search(own)) and not _CAR_ALONE.search(plain)


_BIKE = re.compile(
    r"\b(?:bikes?|bicycles?|bicis?|bicicletas?|tricycle|stroller|wheelchair|skateboard|carriola|patineta)\b"
)
_LIKENED = re.compile(r"\b(?:like|como|than|as)\b(?: \w+){1,7}")
_CAR_ALONE = re.compile(
    r"\b(?:car|truck|van|suv|engine|motor|steering|dash|exhaust|carro|coche|troca|camioneta|volante|escape|mofle|"
    r"auto|hood|it|mine|brakes)\b"
)


def is_of_the_past(plain: str) -> bool:
    """Whether the car that it tells of is gone."""
    gone = _LOOKS_BACK.search(plain)
    return bool(gone) and not _PRESENT.search(plain) and not (gone and _ONE_MORE.search(plain[gone.end() :]))


def is_of_another_thing(clause: str, start: int, end: int) -> bool:
    """Whether a bike, a mower, a phone or a knee has it, and no car."""
    if _JOKED.search(clause[:start]) and _OF_ME.search(clause[end - 1 :]):
        return True
    for found in _OTHER.finditer(clause):
        likeness = _LIKENESS.search(clause[max(0, found.start() - 24) : found.start()])
        if likeness:
            continue
        gap = clause[found.end() : start] if found.start() < start else clause[end : found.start()]
        is_near = "," not in gap and len(gap) <= (60 if found.start() < start else 12)
        if is_near and not _OF_A_CAR.search(_OTHER.sub(" ", clause)):
            return True
        between = clause[found.end() : start]
        if (
            0 < len(between) <= _BEFORE
            and not re.search(r",|\b(?:and|me|us|y|pero|but)\b", between)
            and not _OF_A_CAR.search(between)
        ):
            return True
        if 0 <= found.start() - end <= 10:
            return True
    return False


def is_of_a_wiper(clause: str, words: str) -> bool:
    """Whether it is the noise of a wiper."""
    return bool(_WIPER_NOISE.search(words)) and bool(_WIPER.search(clause)) and not _OF_A_CAR.search(words)
