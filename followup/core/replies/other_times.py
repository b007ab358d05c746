"""Whether a mentioned time is told for something else than the visit: a call, a trip, the past, a farewell."""

from __future__ import annotations

import re

from followup.core.replies.mentions import Days, Hours, Mention, PartOfDay, Text
from followup.core.replies.said import phrases

_CALL = (
    r"\b(?:call|phone|ring|text|llame\w*|llama\w*|marque\w*|marca\w*|marcar\w*|hablen\w*|"
    r"contact|texted|called|messaged|emailed|wrote) (?:me |us |back |him |her |my \w+ |to me |a mi )+(?:back |"
    r"again )?(?:\w+ ){0,2}$"
    r"|\b(?:i|we|you|he|she|they) (?:just |already )?(?:called|texted|phoned|rang|emailed|messaged) (?:\w+ ){0,3}$"
    r"|\b(?:llam(?:ar|en|a|e)(?:me|nos)|marc(?:ar|a)me|marquenme|habl(?:ar|en|e|a)me|llame\w*|llame[nm]\w*|"
    r"marque\w*|hablen\w*|please call|pls call|can you call|could you call) (?:\w+ ){0,2}$"
)
_CALL_PAST = (
    r"|\bnadie (?:\w+ ){0,6}$|\b(?:me |nos )?(?:mandan|mandaron|escriben|escribieron|textean|llaman|llamaron) (?:\w+ "
    r"){0,3}$"
)
_BACK = (
    r"\b(?:need|want|have|get|got to have|necesito|ocupo|quiero)\b (?:\w+ ){0,4}(?:back|ready|"
    r"finished|(?<!check )(?<!go )(?<!hang )(?<!eat )(?<!dine )(?<!work )out|de vuelta)\b[^,.]{0,12}$"
    r"|\bpick(?:ing)? (?:it|her|him|the car|my car|my \w+)(?: back)? ?(?:up)?\b[^,.]{0,10}$"
    r"|\bpick(?:ing)? (?:\w+ ){0,3}(?:up|back)\b[^,.]{0,26}$|\brecoger(?:lo|la)?\b[^,.]{0,18}$"
    r"|\b(?:ready|finished|listo|lista) (?:before|by|antes)?[^,.?]{0,6}$"
    r"|\b(?:done|hecho) (?:before|by|antes) [^,.?]{0,6}$"
    r"|\b(?:will|would|wont|should) (?:it |they |that |my \w+ |the \w+ )?(?:be )?(?:done|ready)"
    r"\b[^,.?]{0,12}$|\b(?:need|want)s? (?:it|this|that|them|those|the \w+|my \w+) to (?:arrive|be here|get here)\b"
    r"[^,.?]{0,12}$|\b(?:it|they|parts?|tires|pads|order|package) (?:\w+ )?(?:arrives?|arriving|gets? here|"
    r"comes? in) (?:for |by |on )?$"
    r"|\b(?:it|that|this|they|job|long) (?:will |does |should |would |wont |doesnt |dont )?take (?:\w+ ){0,3}$"
    r"|\b(?:takes(?! place)|(?:is|its|been|was) taking|tarda\w*|dura) (?:\w+ ){0,3}$"
)
_SPORT = (
    r"(?:soccer|football|baseball|basketball|softball|volleyball|hockey|lacrosse|wrestling|gymnastics|ballet|dance|"
    r"swim\w*|karate|piano|band|choir|scouts|bowling|golf|tennis|rehearsal|tryouts|chemo|dialysis|therapy|surgery|"
    r"jury duty|tournament|bible study)"
)
"""What takes a day of the customer's without a word before it."""
_PASTIME = (
    rf"(?:{_SPORT}|finals|exams?|games?|meetings?|guests|visitors|inventory|training|conferences?|night ?shift|"
    rf"doubles?|"
    r"a double|field trip)"
)
_FAMILY = (
    r"(?:kids?|kiddos?|sons?|daughters?|boys?|girls?|wife|husband|hubby|grandson|granddaughter|grandkids|mom|dad|twins|"
    r"family|baby|brother|sister|roommate|nephew|niece)"
)
_ELSEWHERE = (
    r"\b(?:my|our|the|mi|nuestro|un) (?:trip|flight|vacation|road trip|surgery|wedding|viaje|"
    r"vuelo|boda|payday|birthday|shift|turno|interview|lease|registration|tags|warranty|kids? \w+|"
    r"school|class)\b[^,.?]{0,25}$"
    r"|\b(?:moving|relocating|relocate|(?:we|im|i am) (?:are )?move) (?:out |away |back |over )?(?:of (?:state|town) "
    r"|to \w+ )?[^,.?]{0,12}$"
    r"|\b(?:nos mudamos|me mudo|nos vamos a vivir|me voy a vivir)\b[^,.?]{0,25}$"
    r"|\bdeadline (?:\w+ ){0,1}$"
    r"|\b(?:spring|fall|winter|summer|thanksgiving|christmas) break (?:is |starts |on )*$"
    r"|(?:^\W*|\b(?:got|have|my|theres) )(?:an? |the |my )?"
    rf"(?:dentist|doctors?|vet|court|recital|graduation|funeral|parent teacher|{_SPORT})(?: practice| game| lessons?)?"
    r" (?:appointment |appt |is |on )*$"
    r"|\b(?:working|im at work) (?:(?:all|all day|every|both|on|this|the|a double|nights|late|days|doubles|until|"
    r"till?) )*$"
    rf"|\b(?:company|in ?laws|guests|relatives|visitors|contractors?|plumbers?|movers|{_FAMILY}) (?:is |are )?"
    r"(?:coming|visiting|in town|over|arriving)(?: in| over| on| next| this)* $"
    rf"|\b{_FAMILY} (?:has|needs|got|have|is using|uses|takes) (?:the|my|our) (?:car|truck|van|keys|vehicle)(?: on)? $"
    r"|\b(?:out of|outta) (?:there|here|the shop) $|^\W*back $"
    r"|^\W*(?:(?:im|i am|ill be|we are|were|well be|be|i|we|get|wont be) )*(?:back|home) from (?:\w+ ){1,4}?(?:on )?$"
    r"|\b(?:leaving|leave (?:for|town|on a|work)|(?:we|i) leave (?!it|the|my|her|him)|"
    r"fly(?:ing)?|travel(?:ing)?|salgo de viaje|me voy|viajo|driving to \w+|heading out|"
    r"out of town)\b[^,.?]{0,22}$"
    r"|\b(?:i|we|he|she) (?:get off|get out|work(?! (?:from|at) home\b)|am working|got off|start work|finish work|"
    r"am at work|am in \w+)\b[^,.?]{0,18}$|\b(?:salgo|trabajo(?! (?:de|desde|en) (?:mi |la )?casa\b)|"
    r"entro)\b[^,.?]{0,18}$|"
    r"\bsalgo\b[^,.?]{0,30}\b(?:demas|otros|todos los|siempre|ya)\b[^,.?]{0,18}$|"
    r"\b(?:escuela|kinder|guarderia|ninos?|ninas?|hij[oa]s?|clases?|turno|junta|partido|misa|practica|espos[oa]|"
    r"marido|mujer) (?:\w+ )?(?:salen?|entran?|acaban?|terminan?|empiezan?|abren?) [^,.?]{0,14}$|"
    r"\boff (?:work )?at $"
    r"|\b(?:have to be|need to be|gotta be|got to be|(?<!it )(?<!that )must be|supposed to be|"
    r"tengo que estar) (?!(?:changed|moved|delayed|rescheduled|switched)\b)(?:\w+ ){0,4}$"
    r"|\b(?:(?:do|are|you|u|guys|shop|yall) (?:\w+ )?(?:open|close|closed)(?! at| for|ings?| it\b| the\b| my\b)|"
    r"abren|cierran|abierto|"
    r"abiertos) (?:\w+ ){0,4}$|\b(?:in a|my|a) meeting (?:at|until|till|from) $|\b(?:and that|which|work|shift|"
    r"school|class) starts (?:\w+ ){0,2}$"
)
_WOULD_HAVE = re.compile(
    r"\b(?:(?:id|i would|we would|i couldve|wouldve|could have|would have) (?:have |usually |normally |love to |like "
    r"to )*"
    r"(?:do|done|come|say|said|take|taken|pick|picked)|(?:was|were) (?:going "
    r"to|gonna|hoping for|"
    r"thinking)|(?:usually|normally) (?:i |we )?(?:do|take|come|pick)?)(?: on| for| in)? ?$"
)
_BUT_NOT = re.compile(
    r"^,? ?(?:but|except|only)\b(?! (?:not|only|if|after|before|in|at|maybe|also|can|could|(?:the )?\d+\w*|(?:the "
    r")?(?:mon|tues|wednes|"
    r"thurs|fri|satur)day|tomorrow|today)\b)"
)
"""`I'd do tomorrow but my mom needs a ride, so Friday`: what would have suited."""
_COMPANY = re.compile(rf"\b(?:company|in ?laws|guests|relatives|visitors|contractors?|plumbers?|movers|{_FAMILY}) $")
"""Who comes to see the customer: `company coming Thursday`."""
_OWN_EVENT = re.compile(
    r"(?<!can )(?<!could )(?<!may )(?<!should )(?<!do )(?<!if )"
    rf"(?:\b(?:i|we|ive|weve|he|she|and|but|{_FAMILY}) "
    r"(?:(?!should|could|can|would|want|must|may)\w+ )?|"
    r"^(?:also |just |already )?)"
    r"(?:have|has|got|had|tengo|tenemos) (?:got )?"
    r"(?P<what>(?:a|an|my|un|una|another|some|to help|to get|to take|to pick|to go|to work|to attend|school|work|"
    rf"class|church|court|practice|plans|{_PASTIME})\b[^,.?]{{0,34}})$"
    r"|\btengo (?P<que>(?:un|una|mi)\b[^,.?]{0,30})$"
)
_VISIT_NOUN = phrases(
    r"(?:(?:an?|my|the|another|una?|mi) )(?:[\w:.]+ ){0,3}(?:appointment|booking|booked|reservation|visit|slot|"
    r"spot|opening|"
    r"service|check|inspection|cita|reservacion|day off)",
    r"(?:a|an|some|un|una) (?:\w+ )?(?:chance|minute|time|question|day|slot|available|open|free|place|seat|space|"
    r"early|late|morning|afternoon|reminder|window|break|rato|tiempo|espacio|dia|pregunta)",
)
_OTHER_PLACE = phrases(
    r"dentist\w*",
    r"dental",
    r"doctors?",
    r"dr",
    r"vet",
    r"hair\w*",
    r"eye",
    r"nail",
    r"court",
    r"work",
    r"school",
    r"medical",
    r"therapy",
    r"physical",
    r"salon",
    r"job",
    r"lawyer",
    r"hospital",
    r"otr[oa]",
    r"dentista",
    r"medico",
    r"doctor",
    r"escuela",
)
_DONE_TO = r"(?:changed|replaced|serviced|checked|fixed|rotated|done|inspected|installed)"
_PAST = (
    r"\b(?:promised|overcharged|overbilled|charged|billed|scratched|botched|swore|owed) (?:\w+ ){0,5}$|"
    r"^\W*called (?:\w+ ){0,3}$|"
    r"\b(?:bought|replaced|since|born|sold|traded|purchased|compre|vendi|hice|hicieron|cambie|cambiaron|desde|"
    r"atendieron|arreglaron|resolvieron|entregaron|entrego|cobraron|cobro|recogi|dejaron|"
    r"paid|expires?|vence|told me|quoted|brought) (?:\w+ ){0,5}$"
    r"|(?<!if there )(?<!if it )\bwas(?! (?:\w+ )?(?:thinking|hoping|wondering|looking|wanting|planning|trying|"
    r"going|gonna|talking|able|good|available|asking|saying)) (?:\w+ ){0,5}$"
    r"|\bwere(?! (?:\w+ing|booked|gonna|good|free|open|able|available|ok|fine)\b) (?:\w+ ){0,5}$"
    r"|\bdid(?! (?:you|u|ya|they)\b) (?:\w+ ){0,5}$|(?<!you )(?<!guys )(?<!i )\bsaid "
    r"(?!(?:\w+ ){0,2}(?:can|could) (?:do|come|make|bring)\b)(?:\w+ ){0,5}$"
    r"|\bdue (?!for)(?:\w+ ){0,5}$|\bhad(?! (?:hoped|planned|wanted)) (?:\w+ ){0,5}$"
    r"|(?<!you )(?<!u )(?<!guys )(?<!yall )(?<!have )(?<!has )\bgot (?!any|time|some|room|space|to\b|nothing|"
    r"free|open\w*|off|"
    r"an? (?:\w+ ){0,2}(?:opening|slot|spot|day|chance|booking|booked|appointment|reservation)|"
    r"availab\w+)(?:\w+ ){1,5}$"
    rf"|\b(?:i|we|they|he|she|you|guys|already|just|was|were|been) {_DONE_TO} (?!(?:\w+ ){{0,4}}(?:to|"
    rf"for) $)(?:\w+ ){{0,5}}$"
    r"|\blast (?:week|month|year|night|time|visit|summer|fall|winter|spring|service) (?:\w+ ){0,5}$"
)
_FAREWELL = (
    r"\b(?:enjoy|que tengan?|que pasen?|feliz|tengan?|pasen?) (?:a |an |un |una |your |the |rest of (?:your |the )?|"
    r"of |el |muy )*(?:\w+ ){0,2}$"
    r"|\bhave (?:a|an|yourself an?) (?:very |really |truly )?(?:good|great|nice|lovely|wonderful|blessed|safe|"
    r"fantastic|"
    r"happy|pleasant|awesome|amazing|beautiful|fun|super|fabulous|relaxing|terrific|splendid|fine)\b(?: \w+){0,2} $"
)
_NO_VISIT_BEFORE = re.compile("|".join((_CALL + _CALL_PAST, _BACK, _ELSEWHERE, _PAST, _FAREWELL)))
_ENTERS = re.compile(
    r"^\W*(?:(?:and|also|then|now|yes|ok|sure|please|hi|hey|can|could|will|would|you|lets|just|need|want|like|to|"
    r"kindly|go|ahead|(?P<own>i|id|we)) )*"
    r"(?:create|add|schedule|book|put|set up|enter|log|block|reserve|arrange|organize|invite|include|plan(?! to\b)|"
    r"set|(?:make|have)(?! (?:it|sure)\b))\b"
    r"(?! (?:an? |the |my )?(?:pick ?up|call) (?:for|at|on|by|$))"
    r"(?(own)(?! (?:an? |the |my |our )?(?:surgery|flight|trip|vacation|ride)))"
    r"(?: (?!(?:and|so|because|need|want|have|has|had|it|this|car|truck|vehicle|me|us|that|before|by|while|where|"
    r"when|since|i|we|call|phone|ready|done|fixed|finished|was|were)\b)[^ ,.?!]+){0,12} $"
)
"""A clause that asks for an entry at the time that follows, whatever it is called (`add the school run at 3`)."""
_OWN_HAVING = re.compile(
    r"(?<!can )(?<!could )(?<!should )(?<!may )\b(?:i|we) (?:(?!should|could|can)\w+ ){0,2}(?:have|make)\b"
    r"|^\W*(?:also |just |then |and )?have (?:an?|my|some)\b"
)
"""`I have a class at 3` tells of the customer's own day; `can we have the class at 3` asks for an entry."""
_SUITS_AFTER = re.compile(
    r"^\W*(?:(?:at|after|before|around) )?(?:[\d: ]+(?:[ap]m )?)?"
    r"(?:works?|suits|will work|would work|is (?:good|fine|ok|better|best|great|perfect|open|free))\b"
)
_IN_PAST_TENSE = re.compile(r"\b(?:said|due)\b")
_IS_COMPARED = re.compile(r"(?:later than|earlier than|sooner than|after|before) \d")
_SO_LONG = re.compile(r"\b(?:hours?|hrs?|minutes?|mins?) $")
"""`a few hours later than 3` tells no time by itself."""
_WANTS_BACK = re.compile(r"\b(?:need|want|have|get|like)\b[^,.]{0,16}$")
_GET_VISIT = re.compile(
    r"\b(?:get|have) (?:it|her|him|the car|my car|my \w+|the \w+) (?:in|there|over|to you|"
    r"serviced|looked|checked|down)\b"
)
_MOVED_TO = re.compile(
    r"\b(?:change|move|delay|push|switch|reschedule|bump|swap|cambi\w+|mov\w+|pas\w+)\b[^.?!]{0,60} (?:to|for|until|"
    r"al?|para) $"
)
_NO_VISIT_AFTER = re.compile(
    r"^\W*(?:is (?:when )?my (?:\w+ )?(?:trip|flight|birthday|bday|wedding|anniversary|kids?|sons?|daughters?|"
    r"shift|payday|interview|surgery|last|exam|finals|graduation|vacation|turn)|es mi(?! (?:unic[oa] )?(?:dia|"
    r"descanso))|is the (?:trip|wedding|"
    r"flight)|ago\b|"
    r"was\b|is payday|"
    r"i get paid|(?:ya )?(?:salio|sali|fui|fue|me lo (?:hicieron|entregaron|dieron)) |me pagan|i leave|we leave|"
    r"tengo (?:una?|mi) |"
    r"(?:ya )?(?:lo|la|el carro|el coche) (?:necesito|ocupo|requiero)|i need (?:it|the car|my car) back)"
)
_OWN_EVENT_AFTER = re.compile(r"^\W*(?:i|we) (?:\w+ )?(?:have|got) (?P<what>(?:a|an|my|to)\b(?: \w+){0,4})")
_CLOSES = re.compile(
    r"\b(?:(?:thats?|that is|(?:that|it)(?:ll| will| would)? be|it is|its|it was|be|is) (?:about |just |really )?"
    r"(?:all|al|everything)|(?:thats?|that is|that(?:ll| will| would)? be|be|ll) (?:about |just )?it)"
    r"(?: (?:i|for|from|me|we|need\w*|you|with|your|thanks|right|about|the|at|on|then)){0,5} $"
    r"|\b(?:all i need\w*|thanks|thank you|help\w*|assist\w*|enough|nothing(?: else| more| further)?|"
    r"dont need\w*|no need|"
    r"not need\w*|wont need\w*|(?:im|i am) (?:ok|good|fine|done|all set)|your time|appreciate\w*|all set|helping)\b"
    r"(?: (?!appointment|book|come|bring|drop)\w+){0,5} $"
)
_JUST_PAST = phrases(
    r"didnt|wasnt|lost|went|saw|broke|died|noticed|heard|happened|woke|spoke|talked|stopped by|came by|dropped|felt",
    r"(?:i|just|i already) called",
    r"took (?:it|me|her|the)",
    r"started (?:making|doing)",
    r"how (?:are|is|r) (?:you|u|things|it|everything|everyone|yall)(?: going| doing| all| guys)?",
    r"i made|drove|paso|hizo|empezo|note|escuche|llame|hable",
)


def says_it_suits(right: str) -> bool:
    """Whether these words behind a time say that it suits."""
    return bool(_SUITS_AFTER.match(right))


def is_for_something_else(text: Text, one: Mention, left: str, right: str) -> bool:
    """Whether a time is told for something else than the visit; `left` and `right` are its clause beside it."""
    opener = text.plain[text.symbols[one.start].start : text.symbols[one.end - 1].end]
    if _MOVED_TO.search(left) or (_ENTERS.search(left) and not _OWN_HAVING.search(left)):
        return False
    if _SUITS_AFTER.match(right) and _IN_PAST_TENSE.search(left):
        return False
    if _NO_VISIT_BEFORE.search(left) and not _GET_VISIT.search(left):
        return not opener.startswith("after work")
    if opener.startswith(("by ", "before ", "antes ", "para las", "pa las")) and re.search(
        r"\b(?:done|listo|lista|que (?:ya )?(?:este|quede)(?: list[oa])?)\b ?$", left
    ):
        return True
    if opener.startswith("back by") and isinstance(one.value, Hours) and not left.strip():
        return True
    if opener.startswith("coming ") and _COMPANY.search(left):
        return True
    if opener.startswith("back") and _WANTS_BACK.search(left):
        return True
    if _IS_COMPARED.match(opener) and _SO_LONG.search(left):
        return True
    if _WOULD_HAVE.search(left) and _BUT_NOT.match(text.plain[text.symbols[one.end - 1].end :][:40]):
        return True
    event = _OWN_EVENT.search(left)
    if event and not _is_noted(text, one) and _is_own_event((event["what"] or event["que"]) + opener + right[:24]):
        return True
    after = _OWN_EVENT_AFTER.match(right)
    is_reason = right.startswith(",") and not isinstance(one.value, Days)
    if after and not is_reason and _is_own_event(after["what"]):
        return True
    if _is_of_today(text, one) and (_CLOSES.search(left) or _JUST_PAST.search(left)):
        return True
    return bool(_NO_VISIT_AFTER.search(right))


_NOTED_BEFORE = re.compile(r"\b(?:calendar|schedule|agenda) that (?:i|we) [^.?!]*$")
_NOTED_AFTER = re.compile(
    r"^[^.?!]*[,.;]? *(?:so |and |can you |could you |please )*(?:add|put|enter) (?:that|this) (?:in|on|to|into) "
    r"(?:my|the|your) (?:calendar|schedule|agenda)\b"
)


def _is_noted(text: Text, one: Mention) -> bool:
    """Whether the text asks to enter that very event: `I have a fitting on Friday, please add that to the calendar`."""
    left, right = text.plain[: text.symbols[one.start].start], text.plain[text.symbols[one.end - 1].end :]
    return bool(_NOTED_BEFORE.search(left[-160:]) or _NOTED_AFTER.match(right[:160]))


def _is_own_event(what: str) -> bool:
    """Whether what the customer has is no visit to the shop and no time for one."""
    return bool(_OTHER_PLACE.search(what)) or not _VISIT_NOUN.search(what)


def _is_of_today(text: Text, one: Mention) -> bool:
    """Whether it is today or one of its parts, with which people close a talk or tell what has just happened."""
    if isinstance(one.value, Days):
        return one.value.days in ((text.today,), (text.today, text.today)) or text.cat(one.end - 1) == "weekend"
    return isinstance(one.value, PartOfDay) and not isinstance(one.value, Hours)
