"""What a customer needs beside the visit: to wait, a ride, a loaner, the key drop, a late pickup."""

from __future__ import annotations

import re

from followup.core.replies.contract import Need
from followup.core.replies.said import Phrases, phrases

_NEEDS: tuple[tuple[Need, Phrases], ...] = (
    (
        "wait",
        phrases(
            r"(?:ill|i will|i can|im going to|going to|gonna|want to|wanna|like to|plan to|planning to|"
            r"prefer to|rather|need to|can i|could i|may i|id|i|well|we will|and|just|have to|"
            r"able to) (?:just |probably |also )?wait(?:ing)?(?: (?:there|here|at|in|for (?:it|the car|"
            r"my car)|while|on it|with|inside|on site|onsite|in the))?(?! (?:until|till|til|a|for (?!it|"
            r"the car|my)|to|and see|on (?:this|that)|list|so))",
            r"wait(?:ing)? (?:there|at the shop|in the (?:lobby|waiting)|for (?:it|the car|my car)|"
            r"while (?:you|it|they)|on site|onsite|inside|in your|with (?:it|the car))",
            r"waiter appointment",
            r"(?:work|read|sit|knit|study|camp|chill|nap|do (?:my )?homework)(?:ing)? (?:\w+ ){0,3}(?:in|from|at) "
            r"(?:your|the|yalls) "
            r"(?:waiting (?:room|area)|lobby|lounge)",
            r"(?:ill|i will|i can|and|just) sit with my \w+",
            r"(?:ahi|alli|aqui|alla) (?:me |lo |la |los )?espero",
            r"(?:me |ahi )(?:quedo|quedaria|quedare|siento) a esperar\w*",
            r"espero (?:a que|mientras) (?:\w+ )?(?:termin|acab|list)\w+",
            r"(?:ahi|alli|aqui|alla) espero",
            r"me quedo (?:ahi |alli )?(?:esperando|a esperar\w*)",
            r"(?:stay|hang|sit)(?:ing)?(?: out)? (?:around|put|there|here|in (?:the|your) (?:lobby|"
            r"waiting room))(?: \w+){0,3}",
            r"(?:as )?a waiter",
            r"sit (?:and|there) (?:and )?wait",
            r"stay (?:there |at the shop )?(?:while|with the car|until its done)",
            r"(?:me |lo |la )?(?:espero|esperare|esperarlo|esperar|esperaria|espero ahi|quedo) (?:ahi|"
            r"alli|alla|en (?:el taller|la sala)|el carro|mientras|a que (?:lo |este|termin)|aqui|lo)",
            r"(?:puedo|quiero|voy a|prefiero|quisiera|podria) esperar(?:lo|me)?(?! (?:hasta|a la|unos|al|"
            r"para|un|dos|mas|\d))",
            r"sala de espera para mi",
            r"(?:me |los |lo )?espero en (?:la|su) sal(?:a|ita)(?: \w+){0,2}",
            r"lo espero",
            r"(?:me )?espero ahi",
        ),
    ),
    (
        "ride",
        phrases(
            r"(?:need|want|get|have|give me|use|take|like|appreciate|require|can i get|will need|"
            r"got) (?:\w+ ){0,3}(?:a )?(?:ride|lift|shuttle|uber|taxi)(?! (?:share it)|s? quality)",
            r"(?:drop me off|(?:drop|take|drive|bring|run) me (?:home|to work|back|to my|at (?:work|home|my|the "
            r"(?:office|house|job|school|station))))",
            r"(?:can|could|would|will) (?:you|u|yall|someone|somebody|anyone|anybody|one of you|you guys|they|a "
            r"driver|the shuttle) (?:guys |please |"
            r"possibly |maybe )*(?:(?:drive|shuttle|zip|haul) (?:me|us)|(?:run|drop|take|bring|lift) (?:me|us) "
            r"(?:over |back |up )?(?:home|back|"
            r"to (?!you|the shop|your|it|\d|see|fix|check)))(?: \w+){0,3}",
            r"(?:be )?(?:driven|dropped|shuttled|taken) (?:home|to work|back|to (?:my|the) (?:office|job|school|"
            r"house|work))",
            r"(?:need|want|have|like|love|appreciate) (?:yall|you|u|you guys|somebody|someone|one of you|"
            r"a driver) to (?:take|"
            r"drive|run|bring|carry|drop) (?:me|us)(?: \w+){0,3}",
            r"pick me up",
            r"(?:someone|somebody|anyone|anybody|one of (?:you|yall|your (?:guys|people)|the guys))(?: (?:there|at "
            r"the shop|over there))? "
            r"(?:can|could|will|would) (?:run|drop|take|drive|bring|zip|shuttle) (?:me|us)(?: \w+){0,3}",
            r"(?:need|want) (?:to be )?(?:picked up|dropped off|a drop ?off)(?! (?:time|it))",
            r"shuttle (?:please|too|home|to|me|back|ride)",
            r"no (?:way|ride) (?:to get )?(?:home|to work|back)",
            r"(?:somebody|someone|one of you) to (?:run|take|drive|drop|bring) me(?: \w+){0,3}",
            r"(?:a |the )?(?:lift|ride|shuttle) (?:to|home|back|over to|into) (?:\w+ ?){1,3}",
            r"(?:alguien )?(?:me|nos) (?:tienen?|tendrian?|van|iban|podran?) (?:que|"
            r"a) (?:\w+ )?(?:llevar|traer|regresar|recoger|dejar)"
            r"(?! (?:el|mi|la) (?:carr(?:o|ito)|coche(?:cito)?|auto))",
            r"(?:me |nos )?(?:den|dan|dar) (?:un )?(?:ride|raite|aventon)",
            r"que (?:alguien )?me (?:lleven?|recojan?|dejen?|regresen|traigan|acerquen?)(?! (?:el|mi|"
            r"la) (?:carr(?:o|ito)|coche(?:cito)?|auto))",
            r"ride (?:home|to work|back)",
            r"(?:me |nos )?(?:pueden?|podrian?|puede alguien|alguien) (?:\w+ )?(?:llevar|recoger|dejar|"
            r"traer|dar un aventon|dar ride)(?:me|nos)?(?! (?:el|mi|la) (?:carro|coche|auto|camioneta))",
            r"(?:necesito|quiero|ocupo|voy a necesitar|requiero) (?:\w+ ){0,2}(?:aventon|ride|raite|"
            r"transporte|que me (?:lleven|recojan|dejen|den (?:un )?(?:ride|raite|aventon)))",
            r"(?:llevarme|recogerme|dejarme|llevenme|recojanme)",
            r"(?:me|nos) (?:llevan|recogen|dejan|dan (?:un )?(?:aventon|ride|raite))",
        ),
    ),
    (
        "loaner",
        phrases(
            r"(?:need|want|get|have|like|use|reserve|require|give me|appreciate|can i get|will need|"
            r"requesting|with) (?:\w+ ){0,3}(?:a |the )?(?:loaner|rental|courtesy car|loan car|"
            r"replacement (?:car|vehicle)|loaner car)",
            r"(?:need|want|have|get) (?:\w+ ){0,2}something (?:else )?to drive",
            r"(?:need|want|have) (?:a set of |some )?wheels while",
            r"(?:to|can i|could i|like to) borrow (?:a|one of your|your|another) (?:car|vehicle|loaner)",
            r"(?:need|want) (?:a|another) (?:car|vehicle) (?:to (?:drive|use|get)|while|for the day|"
            r"that day|meanwhile|in the mean)",
            r"loaner (?:please|too|car please|for the day|that day|til+|until|while)",
            r"(?:prestar|presten)\w* (?:un |otro |algun )?(?:carr(?:o|ito)|coche(?:cito)?|auto)",
            r"(?:require|need|want|borrow|use|take|lend me|give me) (?:\w+ )?(?:one|any) of (?:your|yalls|"
            r"the) (?:cars|vehicles|"
            r"loaners)",
            r"(?:need|want|take|borrow|use|need to use|need to borrow) (?:one of )?(?:your|yalls|the) loaners?",
            r"(?:carr(?:o|ito)|coche(?:cito)?|auto) (?:prestado|de prestamo|de cortesia)",
            r"(?:necesito|ocupo|quiero|voy a (?:necesitar|ocupar)) (?:un[oa]?|algun[oa]?) (?:prestad[oa])",
            r"(?:necesito|necesitaria|quiero|ocupo|ocuparia|voy a necesitar|requiero|quisiera|"
            r"me pueden? (?:prestar|dar)|"
            r"me prestan|con) (?:\w+ ){0,3}(?:carr(?:o|ito)|coche(?:cito)?|auto|vehiculo) (?:prestado|de prestamo|"
            r"de reemplazo|de cortesia|rentado|mientras|de renta|sustituto)",
            r"(?:me )?(?:pueden?|podrian?|puedes) (?:prestar|dar)(?:me)? (?:un |otro )?(?:carr(?:o|ito)|"
            r"coche(?:cito)?|auto)",
            r"(?:me )?prestan (?:un )?(?:carr(?:o|ito)|coche(?:cito)?|auto)",
        ),
    ),
    (
        "early_drop",
        phrases(
            r"(?:drop|leave|leaving|dropping|bring|park) (?:it|the car|her|him|my \w+|the \w+|off|"
            r"the keys?|keys?|them) ?(?:off|there|over|in the \w+)? ?(?:\w+ )?(?:the night before|"
            r"night before|the evening before|overnight|before (?:you )?open(?:ing)?|before you guys open|"
            r"before hours|early before|in the (?:key|drop|night)|after hours|sunday night|tonight|(?:at|"
            r"around) [56](?:am| am))",
            r"(?:key|night|early bird|earlybird|after hours|overnight) drop(?: ?off| ?box)?",
            r"drop ?box",
            r"early (?:bird )?drop(?: ?off)?",
            r"(?:drop|leave) (?:the |my )?keys?(?: \w+){0,3} (?:box|slot|drop|mailbox)",
            r"(?:dejar|dejo|dejarlo|dejarla|lo dejo|la dejo|dejare) (?:\w+ ){0,4}(?:la noche (?:antes|"
            r"anterior)|una noche antes|antes de (?:que )?abr\w+|en el buzon|en la caja|desde la noche|"
            r"temprano antes|un dia antes)",
            r"buzon de llaves",
            r"(?:dejo|dejar|dejare|pongo|echo) (?:la|las|mis|mi) llaves?(?: \w+){0,6} (?:cajita|buzon|ranura|"
            r"caja|buzoncito)",
            r"(?:drop|leave|put|keys? (?:will|ll|would) be) (?:\w+ ){0,6}before (?:you|yall|u|you guys|"
            r"you folks|you all) open",
            r"keys? (?:\w+ ){0,3}(?:in|through|into) (?:the|your) (?:slot|box|drop|mail ?slot|chute)",
            r"(?:dejar|dejo) (?:las|la|mis) llaves?(?: \w+){0,2} (?:buzon|caja)",
            r"(?:dej|ech|met|aviento|deposit)\w* (?:\w+ ){0,10}(?:(?:cajita|buzon|ranura|caja|buzoncito|hoyo)"
            r"(?: (?:de|para) (?:las |la )?llaves?)?)(?! (?:chica|de cambios))",
            r"la noche (?:antes|anterior)",
            r"antes de que abran",
        ),
    ),
    (
        "late_pickup",
        phrases(
            r"(?:pick|picking|get|collect|grab) (?:it|the car|her|him|up|"
            r"my \w+)(?: up)? (?:\w+ ){0,3}(?:late|after (?:you )?(?:close|closing|hours|6|7|8|work)|"
            r"after you guys close|tonight|at night|the next (?:day|morning)|next day|in the evening|"
            r"past closing|after business)",
            r"(?:pick|get|collect|grab|fetch|pickup)\w* "
            r"(?:\w+ ){0,4}(?:after|once|when) (?:you|youve|you have|yall|you guys|"
            r"you are|youre|the shop is)(?: \w+)? ?clos(?:e|ed|ing)",
            r"(?:recog\w*|recoj\w*|paso por|pasar por|pasaria por) "
            r"(?:\w+ ){0,6}(?:cerr(?:aron|ado|ar|aran)|cierr\w+|cierre)",
            r"(?:cant|no way (?:i|we) can|wont be able to|not able to|dont) (?:\w+ ){0,4}(?:pick it up|get it|"
            r"get there|"
            r"be there|make it|come back) (?:\w+ ){0,4}(?:before|by the time) (?:you|yall|you guys) close",
            r"late pick ?up",
            r"after ?hours pick ?up",
            r"pick ?up (?:late|after (?:hours|closing|close|you close))",
            r"(?:recoger(?:lo|la)?|recojo|paso por (?:el|ella)|pasar por (?:el|ella)|lo recojo|"
            r"la recojo) (?:\w+ ){0,3}(?:tarde|despues de (?:que )?(?:cerrar|cierren|cierran|las [678])|"
            r"en la noche|noche|al dia siguiente|despues del cierre|otro dia)",
        ),
    ),
)
_JUST_ASKED = re.compile(
    r"\bwill (?:you|u|yall|there|the shop) (?:guys )?(?:have|be|provide|offer)\b|"
    r"\b(?:do|should|would|must) (?:i|we) (?:have to |need to |gotta )?(?:just )?(?:leave|drop|bring|park)\b|"
    r"\b(?:do|does|is|are|did) (?:you|u|yall|you guys|there|the shop|it) (?:\w+ ){0,2}(?:have|"
    r"offer|provide|do|give|got|include|a|any|shuttle|loaners?|rides?)\b|\b(?:tienen(?! que)|ofrecen|hay|"
    r"prestan|dan|cuentan con)\b|\bhow long (?:is|will) (?:the )?wait\b|\b(?:have|"
    r"got) (?:a )?(?:ride|my own)\b(?! home)"
)
_NOT_NEEDED = re.compile(
    r"\b(?:dont|do not|no|wont|not|cant|sin|no necesito|no ocupo|no puedo|no quiero|wouldnt)\b (?:\w+ ){0,3}$"
)
_ONLY_AFTER = re.compile(r"\b(?:until|unless|till?|before|hasta|sino|antes)\b")
"""`cannot pick it up until after you close` is a need, not one denied."""
_REAL_WISH = re.compile(
    r"\b(?:can|could|may) i|\bi(?:ll)? (?:need|will|want|d like)|\bneed\b|\bwant\b|"
    r"\bwait (?:there|for it)|\bnecesito\b|\bocupo\b|\bquiero\b|\bme (?:pueden|prestan|llevan)"
)


_PUTS_OFF = re.compile(
    r"\b(?:what (?:happens|if)|if (?:i|we) (?:just )?wait|can (?:i|we) wait (?:on|til+|until|or|a|another)|que pasa si|"
    r"puedo esperar(?:me)? (?:o|un|unos|otro|otra|mas)|"
    r"(?:grave|urgente|serious|urgent|dangerous)\b.*\b(?:wait|esper)\w*|"
    r"(?:wait|esper)\w*\b.*\b(?:grave|urgente|serious|urgent|dangerous))\b"
)
"""Waiting with the work, not in the shop."""
_OWN_WAY = re.compile(
    r"\b(?:and|ill|i|then|will|just|to) (?:just |then )?ride (?:(?:my|the|a) (?:bus|bike|train|bicycle) )?(?:home|"
    r"back)\b|"
    r"\b(?:son|daughter|wife|husband|hubby|friend|neighbor|mom|dad|buddy|coworker|brother|sister|cousin|girlfriend|"
    r"boyfriend|"
    r"uncle|aunt|roommate|grandson|granddaughter)s? (?:will |can |is going to |is |said (?:he|she) (?:can|will|"
    r"would) )?(?:giv\w+|tak\w+|"
    r"pick\w*|drop\w*|driv\w+|follow\w*)\b|\bmi (?:hij[oa]|espos[oa]|amig[oa]|vecin[oa]|herman[oa]|mama|papa|"
    r"prim[oa]|sobrin[oa]|"
    r"cunad[oa]|compadre|comadre|niet[oa]|marido|novi[oa]|viejo|vieja) (?:me |nos )(?:va a |puede )?(?:da|dar|llev|"
    r"recog|deja|trae)"
)
"""A lift that the customer has already."""


_NO_NEED = phrases(
    r"(?:my|our|the|her|his) (?:only|main) (?:ride|way)(?: (?:to|for|back|home)(?: \w+){0,2})?",
    r"(?:buddy|friend|guy|cousin|brother|neighbor|uncle)(?: \w+)? (?:with|w|who has|has|got) a lift",
    r"(?:was|were) (?:gonna|going to|planning to|thinking id) wait(?: \w+)?",
)


def find_needs(plain: str) -> tuple[Need, ...]:
    """What the text asks for with the visit itself, not what it merely asks about."""
    found: list[Need] = []
    plain = _NO_NEED.sub(" ", plain)
    sentences = [part for part in re.split(r"[.!?;]+|\bbut\b|\bpero\b", plain) if part.strip()]
    for need, pattern in _NEEDS:
        for sentence in sentences:
            match = pattern.search(sentence)
            is_only_later = need == "late_pickup" and _ONLY_AFTER.search(sentence)
            if not match or (_NOT_NEEDED.search(sentence[: match.start()]) and not is_only_later):
                continue
            if need == "wait" and _PUTS_OFF.search(sentence):
                continue
            if need == "ride" and _OWN_WAY.search(sentence):
                continue
            if _JUST_ASKED.search(sentence) and not _REAL_WISH.search(sentence):
                continue
            found.append(need)
            break
    return tuple(found)
