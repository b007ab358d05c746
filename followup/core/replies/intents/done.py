"""`done`: the work has been done already, here or elsewhere."""

from __future__ import annotations

import re

from followup.core.replies.said import Said, phrases

CODE = "done"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "already did it", "got them replaced last week", "my husband changed the pads himself",
        "its been taken care of thx", "just had it done at the dealer", "put new ones on myself", "been done",
        "done already", "already got that", "took it to another shop", "my cousin fixed it", "had that done in jan",
        "we got new tires sat", "they did it at the dealership", "all fixed thanks", "its handled",
        "already replaced em", "changed it myself on sunday", "someone else did the work", "i had my guy do it",
        "battery was replaced 2 months ago", "oil was changed last week", "you guys just did that",
        "i bought new wipers already", "took care of that last month", "brakes were done in november",
        "got it fixed elsewhere", "its already been serviced", "all done", "already handled", "we did that already",
        "got it done last thursday", "had the brakes replaced in march", "dealer already took care of it",
        "ive done it", "been taken care of", "someone beat you to it", "new battery went in yesterday",
        "i did the oil myself", "its been fixed", "my dad already did it", "already replaced those",
        "had it looked at elsewhere", "i handled it", "that got done with my last service", "new tires already on",
        "went ahead and did it elsewhere", "my shop near home did it", "had it done by a friend",
        "swapped them out last week", "oil was just done", "just did brakes", "that was fixed already",
        "we got it fixed in vegas", "my warranty shop already replaced it", "ive already replaced it",
        "the dealership took care of it", "yep did that last week",
    ),
    "es": (
        "ya lo hice", "ya me los cambiaron en otro lado", "mi esposo ya los cambio", "ya quedo, gracias",
        "ya le puse llantas nuevas", "ya esta hecho", "ya lo arregle", "ya lo lleve con mi mecanico",
        "mi primo me lo hizo", "lo cambie yo mismo ayer", "ya le cambie el aceite", "ya le pusieron bateria nueva",
        "ya me lo hicieron en la agencia", "se los cambiaron la semana pasada", "ya fue reparado",
        "eso ya se arreglo", "ya compre las llantas en otro lado", "ya estuvo, lo arreglaron",
        "ya me atendieron en otro taller", "ustedes ya me lo hicieron", "ya lo checaron en otra parte",
        "ya los cambiamos", "desde enero le cambie los frenos", "ya todo arreglado", "yo ya se los puse",
        "ya le hicimos el servicio", "ya tiene frenos nuevos", "ya lo hicieron", "ya me hicieron ese trabajo",
        "ya lo cambie", "lo hizo mi hermano", "ya los cambiaron", "ya tiene llantas nuevas",
        "ya le hicieron el cambio de aceite", "ya lo resolvimos", "eso ya esta", "ya lo arreglo mi esposo",
        "ya me pusieron una nueva", "ya quedo listo", "eso ya lo cambie", "ya se lo cambie yo",
        "lo hicimos en otro taller", "la agencia ya lo hizo", "ya me pusieron las llantas", "ya compre bateria",
        "ya los puse", "hace un mes lo arreglaron", "ya le hicieron servicio",
    ),
}  # fmt: skip

_WORK = (
    r"(?:done|replaced|changed|fixed|serviced|installed|repaired|rotated|swapped|taken care of|"
    r"handled|put on|looked at|checked(?: out)?|sorted(?: out)?|inspected|new ones)"
)
_WHO = (
    r"(?:i|we|he|she|they|husband|wife|dad|father|brother|buddy|friend|son|guy|mechanic|someone|"
    r"dealer(?:ship)?|uncle|neighbor|cousin|boyfriend|nephew|another shop|other shop|shop|costco|"
    r"somebody|boss|work)"
)
_SAYS = phrases(
    r"(?:that|it|those) got (?:done|fixed|replaced|changed)(?: \w+){0,5}",
    r"(?:had|took|brought|ran) (?:it|her|him|them|that|the \w+|my \w+) (?:in |over |down )?(?:to|at|by) (?:my|"
    r"another|a|the) "
    r"(?:(?:other|different|local|corner) )?(?:guy|mechanic|shop|place|garage|dealer\w*|buddy|friend|cousin|uncle|"
    r"brother|lube place)"
    r"(?: \w+){0,3}",
    r"been (?:\w+ )?(?:done|fixed|replaced|changed) since(?: \w+)?",
    r"(?:ive|i have|we have|weve|i) (?:already )?done (?:it|that|them|those)",
    r"(?:new )?(?:battery|tires?|brakes?|pads?|wipers?|rotors?) (?:\w+ )?(?:went|were put|was put|put) "
    r"(?:in|on)(?: \w+){0,3}",
    r"(?:got|gotten|had) (?:\w+ ){0,2}(?:done|replaced|changed|fixed)(?= (?:last|already|in|at|on|"
    r"yesterday|elsewhere|this)| ?\Z)",
    r"(?:took|brought) (?:it|them|that|her|my \w+|the \w+) (?:in )?to (?:the |a |my |this |that )(?:\w+ "
    r"){0,2}(?:place|shop|lube|garage|mechanic|guy|dealer\w*|tire \w+)",
    r"(?:hubby|wife|husband|dad|son|brother|buddy|friend|neighbor|guy|cousin|uncle|he|she|they|i|we) "
    r"(?:\w+ )?(?:replaced|changed|fixed|swapped|installed|did|put) (?:it|them|that|those|everything)(?: "
    r"\w+){0,4}",
    r"(?:were|was) (?:put on|done|replaced|changed|installed|swapped) (?:\w+ ){0,2}(?:january|february|"
    r"march|april|may|june|july|august|september|october|november|december|last|\d+|two|three|recently|"
    r"yesterday)",
    r"(?:had|have|got) (?:them|it|those|that|everything) (?:swapped|replaced|changed|done|fixed|rotated|"
    r"installed)",
    r"(?:took|brought) (?:it|them|that|her|my \w+|the \w+) (?:in )?(?:to )?(?:another|a different|someone|"
    r"somewhere|elsewhere|the dealer\w*|my guy|my mechanic|a friend)",
    r"(?:someone|somebody) else (?:\w+ )?(?:did|fixed|replaced|changed|took care)",
    r"had (?:my|a|the|another|some) (?:guy|mechanic|buddy|friend|son|husband|brother|dealer\w*|neighbor|"
    r"shop|cousin) (?:\w+ )?(?:do|fix|change|replace|install|put|handle|look|take care)",
    r"(?:brakes?|tires?|pads?|battery|oil|wipers?|filters?|rotors?|fluid|those|they|these|that|it|all) "
    r"(?:\w+ )?(?:was|were|is|are|got|been|have been|has been) (?:\w+ )?(?:done|replaced|changed|fixed|"
    r"serviced|rotated|swapped|installed|put on|handled|sorted)(?: in (?:january|february|march|april|may|"
    r"june|july|august|september|october|november|december|the)| last| already| \d| two| three| a| at| by|"
    r" yesterday| recently| on| elsewhere)",
    r"already (?:been |gotten |have )?(?:did|done|had|got|gotten|took|taken|changed|replaced|"
    r"fixed|serviced|handled|bought|went|brought|put|swapped|sorted|have new|rotated|installed|"
    r"repaired|getting|completed|have (?:it|them|that) (?:done|on|in)|have (?:those|"
    r"them))(?! (?:a|an|my|the)? ?(?:appointment|question|plans|something|message|text|told))",
    rf"(?:got|had|ive gotten|have gotten|having) (?:it|them|that|those|this|my \w+(?: \w+)?|"
    rf"the \w+(?: \w+)?|all \w+|both|everything|new \w+|\w+ new \w+|\w+) (?:\w+ )?{_WORK}",
    rf"(?:been|was|were|is|are|got|all|has been|have been) (?:already |all |"
    rf"just )?{_WORK}(?: (?:already|last|yesterday|at|by|elsewhere|somewhere|thanks|today|this|now|"
    rf"here|there|a |in )\b|\Z)",
    r"took care of",
    r"(?:is|are|was|all|got|its|been|its been) (?:\w+ )?taken care of",
    r"taken care of",
    r"(?:did|done|changed|replaced|fixed|swapped|installed) (?:it|them|that|those|the \w+|my \w+|"
    r"this)? ?(?:\w+ )?(?:myself|ourselves|himself|herself|elsewhere|somewhere else|at (?:another|"
    r"a different|the dealer\w*|home|costco|my)|last (?:week|month|year|night|summer|fall|spring|"
    r"winter|\w+day)|yesterday|already|this morning|a (?:few )?(?:week|month|while|day|"
    r"year)s? (?:ago|back)|\w+ (?:week|month|day)s? ago)",
    rf"{_WHO} (?:already |just |actually )?(?:did|fixed|replaced|changed|put|installed|swapped|"
    rf"rotated|repaired|took care of|got|handled|switched|topped off|sorted) (?:it|them|that|those|"
    rf"the \w+|my (?!mind|decision|plans?)\w+|new|on|both|all|him|everything|one|some)(?! (?:sorted|"
    rf"done) (?:soon|asap))",
    r"just (?:had|got|did|replaced|changed|put|swapped|fixed|bought)(?! (?:surgery|a|an|the|my|your|off|"
    r"back|home|to|this|here|up|out|in|into|married|paid|laid|done (?:work|eating))\b)",
    r"just (?:had|got|did|replaced|changed|put|swapped|fixed) (?:a|an|the|my|some|"
    r"on)? ?(?:\w+ )?(?:tires?|brakes?|pads?|oil|battery|wipers?|filters?|service|inspection|"
    r"alignment|rotors?|belt|fluid|ones|work|change)",
    r"(?:bought|put(?: on)?|got|have|has|installed) (?:\w+ )?(?:brand )?new (?:set of )?(?:tires?|"
    r"brakes?|pads?|battery|wipers?|wiper blades|blades|filters?|rotors?|ones|set|belt|shocks|"
    r"struts|oil|fluid|coolant)(?: (?:on|in|put|already|last|from|at))?",
    r"(?:already|all) done",
    r"(?:is|its|thats|that is) (?:already |all )?(?:done|fixed|handled)\Z",
    r"(?:it|that|this) (?:is|was) (?:already )?(?:done|handled|fixed)(?! when)",
    r"been there done that",
    r"beat you to it",
    r"done (?:already|elsewhere|thanks|last week|yesterday|deal)",
    r"^(?:all )?done\Z",
    r"went (?:to (?:another|a different|someone|somewhere|the dealer)|elsewhere|somewhere else)",
    r"(?:someone else|another shop|the dealer\w*|other shop|different shop) (?:\w+ )?(?:did|fixed|"
    r"replaced|changed|took care)",
)
_HECHO = (
    r"(?:hice|hicieron|hizo|hicimos|cambie|cambiaron|cambio|cambiamos|arregle|arreglaron|arreglo|"
    r"arreglamos|repare|repararon|reparo|compre|compramos|puse|pusieron|puso|pusimos|lleve|"
    r"llevamos|llevo|revisaron|reviso|solucione|solucionaron|instalaron|instale|resolvi|"
    r"atendieron|rotaron)"
)
_DICE = phrases(
    r"se (?:lo|la|los|las) (?:estan|esta|estaban) (?:cambi|arregl|hac|repar|pon)\w+ (?:\w+ )?(?:en otro|"
    r"otro|mi|un)(?: \w+)?",
    r"ya (?:lo|la|los|las|le|me|se) (?:\w+ )?(?:chec|revis|atend|hic|hiz|camb|arregl|repar|pus|instal|"
    r"soluc|resolv)\w+(?: en| con| por| mi| un)?",
    r"ya (?:todo )?(?:esta |quedo |todo )?(?:arreglad|hech|reparad|cambiad|resuelt|list)[oa]s?",
    r"desde (?:\w+ ){1,3}(?:le |lo |los |las |se )*(?:camb|hic|pus|arregl|repar)\w+",
    r"(?:lo|la|los|las) arreglaron(?=\Z|[.,!])",
    rf"ya (?:\w+ ){{0,3}}{_HECHO}(?! (?:de opinion|de idea))",
    rf"(?:me|nos|se) (?:lo|la|los|las) (?:ya )?(?!llevo(?! (?:al?|con) )){_HECHO}",
    rf"(?:lo|los|la|las|le) {_HECHO} (?:yo|en|con|ayer|la semana|hace|ya|el|mi|un|hoy|otro|en otro)",
    rf"mi (?:esposo|esposa|marido|hijo|hermano|papa|cunado|mecanico|compadre|vecino|primo|tio|"
    rf"suegro|novio|amigo|yerno|sobrino)(?: \w+)? (?:ya )?(?:me |se |le )?(?:lo |la |los |"
    rf"las )?{_HECHO}",
    r"ya (?:esta|estan|quedo|quedaron|fue|fueron)(?: \w+)? ?(?:hech[oa]s?|list[oa]s?|arregl\w+|"
    r"resuelt[oa]|reparad[oa]s?|cambiad[oa]s?|todo|solucionad[oa]|nuev[oa]s)?(?= ?(?:\Z|[.,!]| en|"
    r" gracias| con| por| desde| ayer| hace| la semana))",
    r"ya se (?:hizo|hicieron|arreglo|cambio|cambiaron|soluciono|reparo)",
    r"ya (?:tengo|traigo|tiene|trae|le puse|compre) (?:\w+ )?(?:llantas|frenos|bateria|balatas|"
    r"limpiaparabrisas|plumas|filtro|unas|unos) ?(?:nuev[oa]s?)?",
    r"ya (?:fui|lo lleve|la lleve) (?:a|con|al)",
    r"(?:ya )?(?:esta|estan) hech[oa]s?",
    r"hecho ya",
    r"(?:me|le|nos) (?:lo |la |los |las )?(?:compusieron|dieron|pusieron|cubrio|cubrieron|alinearon|pasaron|"
    r"resolvieron) "
    r"(?:\w+ ){0,4}en (?:otr[oa]|un|una|el|la|mi|casa)(?: \w+)?",
    r"ya (?:la |lo |se )?(?:paso|pase) (?:\w+ )?(?:inspeccion|verificacion|smog|revision)",
    r"(?:inspeccion|verificacion|smog|revision) ya (?:la |lo )?(?:paso|pase|pasamos|hice)",
    r"ya (?:se encargo|le meti mano|le meti|quedo eso)(?: \w+)?",
    r"ya hecho",
    r"ya las? tengo nuev\w+",
    r"(?:en otro (?:lado|taller|lugar)|con otro mecanico)(?: \w+)? ?(?:ya )?(?:me |se )?(?:lo|la|"
    r"los|las)? ?(?:hice|hicieron|cambiaron|arreglaron)",
)
_HAS_SOMEONE = re.compile(
    r"\b(?:already )?(?:got|have|had|found) (?:a|my|my own|our) (?:guy|mechanic|fella|man|person|shop)\b"
)
"""Somebody who does such work is no work done."""
_OF_WORK = re.compile(
    r"\b(?:(?:im |i am |i get |ill be |we are |get |getting )?(?:done|finished) (?:with|at|from) (?:my |the "
    r")?(?:work|school|class\w*|shift|"
    r"job|lunch|church|practice|errands|chemo|therapy)|"
    r"(?:while|until|till?|before|after|when|once) (?:it|its|it is|they|theyre|you|youre|the car|my car|she|he)(?: "
    r"\w+)? "
    r"(?:done|finished|fixed|serviced)|"
    r"did (?:my|our|the|anyone|anybody|someone|somebody|he|she|they) (?:(?!you\b)\w+ ){1,6}\w*(?=\W*(?:\?|$)))\b"
)
"""What else ends: a day at work, or the wait; and what is asked."""
_SWAPPED = re.compile(
    r"\b(?:l[oa] )?(?:cambi(?:e|o|amos)|di|entregue) (?:\w+ )?por (?:un[oa]?|otr[oa])\b|\bse cambiaron de\b|"
    r"\bcambio de (?:dueno|duena|numero|persona|manos)\b"
)
"""A car given for another, or a move, is no work done."""
_NOT_DONE = re.compile(
    r"\b(?:havent|hasnt|hadnt|not|never|didnt|wasnt|werent|isnt|arent|need(?:s|ed)? to|"
    r"want(?:ed)? to|have to|can i|can you|could (?:you|i)|should(?:nt| have)?|would|will|when|"
    r"going to|gonna|if|until|once|wish|did you|have you|has it|is it|are they|was it|did they|"
    r"were they|am i|yet to|till?|while|get|(?:like|love|able|way|time|try|trying|plan|hoping|able|about|him|her|"
    r"them|someone|supposed) to|after you|no (?:lo|la|los|las|me|se|he|hemos|le|nos)|todavia no|"
    r"aun no|nunca|cuando|si (?:me|ya|lo)) (?:\w+ ){0,4}\Z"
)
_NOT_YET_AFTER = re.compile(
    r"^[^.,!]{0,15}\b(?:yet|right\?|by you\?|or not|and it (?:wasnt|isnt)|"
    r"but it (?:wasnt|isnt|still)|but (?:wasnt|isnt))\b"
)


_OTHER = re.compile(r"my mind|appointment|wasnt|isnt")
_PRESENT = re.compile(
    r"\byo (?:solo |mismo |siempre |se )?(?:le |lo |la |los |las )?(?:cambio|arreglo|reparo|reviso|llevo)\b"
    r"|(?<!ya )(?<!se )(?<!me )\b(?:lo|la) llevo\b"
    r"|\b(?:manana|hoy|lunes|martes|miercoles|jueves|viernes|sabado|tarde|las \d+)(?: y media)? se (?:lo|la) llevo\b"
    r"|\b(?:lo|la|los|las) (?:arreglo|cambio|reparo) yo\b"
)
"""What somebody does, not did: accents are gone, so `cambio` may be either."""


def holds(said: Said) -> bool:
    """Whether it says, not asks or wishes, that the work is done."""
    if said.asked == "after_visit":
        return False
    text = _SWAPPED.sub(" ", _OF_WORK.sub(" ", _HAS_SOMEONE.sub(" ", said.text)))
    for pattern in (_SAYS, _DICE):
        for match in pattern.finditer(text):
            clause_start = max(text.rfind(mark, 0, match.start()) for mark in ".!?,;") + 1
            left = text[max(clause_start, match.start() - 45) : match.start()]
            if _PRESENT.search(text[clause_start : match.end() + 6]) or _OTHER.search(match.group()):
                continue
            if not _NOT_DONE.search(left) and not _NOT_YET_AFTER.search(text[match.end() :]):
                return True
    return False
