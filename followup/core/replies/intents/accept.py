"""`accept`: the customer says yes to what was asked."""

from __future__ import annotations

import re

from followup.core.replies.said import Phrases, Said, phrases
from followup.core.replies.yes_words import IF, MOCKS, says_yes_within

CODE = "accept"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "yes", "yeah sure", "sounds good", "ok lets do it", "yes pls book me in", "works for me", "why not", "yep",
        "ya please", "absolutly", "im down", "heck ya", "ok", "sure thing", "that would be awesome", "go ahead",
        "yes sir", "i should get that done yeah", "please do", "for sure", "yes i would like that", "count me in",
        "lets get it done", "i guess so", "fine with me", "yup lets go", "id appreciate that", "perfect, set it up",
        "i need that yes", "cool", "yes please thank you", "yes i do", "sure why not", "sounds like a plan",
        "yessss", "ok do it", "lets schedule", "that'd be great", "yeah id like to come in",
        "ok i will bring it in", "i'm interested", "sign me up", "alrighty", "yes we would", "definitely need that",
        "okay let's set something up", "ya lets do it", "yes that works", "great thanks, yes", "for sure man",
        "yep yep", "yesss please", "sure do", "let's get it in", "yes ma'am please", "id like that yes",
        "ok book it", "yes schedule", "im ready", "sounds fine", "ok why not", "yes i am", "affirmative",
        "that's good", "alright lets go", "do it", "definitely yes", "yeah go for it", "ok set me up",
        "yes i want to", "let's roll", "sure whenever",
    ),
    "es": (
        "si", "claro que si", "sale", "si por favor", "esta bien, agendeme", "me parece bien", "dale", "simon",
        "orale", "sip", "si quiero", "andale pues", "si esta bien", "va", "si me interesa", "claro", "pos si",
        "de una", "como no", "por supuesto", "si hagalo", "si ocupo eso", "apunteme", "me late", "si adelante",
        "perfecto", "ta bien", "esta perfecto", "sale pues", "si porfis", "si claro", "si senor", "me parece",
        "va que va", "si gracias", "si quiero que lo revisen", "agendame", "me interesa",
        "si, necesito ese servicio", "bueno si", "esta bueno", "si me gustaria", "si con gusto", "sii", "si xfa",
        "dele", "jale", "si hombre", "hagale", "si agendelo", "si lo llevo", "me apunto", "si como no",
        "si quiero cita", "perfecto si", "si me sirve",
    ),
}  # fmt: skip

_STRONG = (
    r"im ready(?! (?:to sell|for))",
    r"lets roll",
    r"(?:i )?(?:(?:guess|suppose) )?(?:i |we )?(?:have|got|dont have|aint got) (?:no|much|a|any) choice|(?:twist|"
    r"twisted) my arm",
    r"i think so",
    r"(?:that is|thats|its|it is) a (?:big |definite )?yes",
    r"(?:please )?(?:add|put) (?:me|us|it) (?:to|on) (?:the|your) (?:schedule|calendar|books?|list for)",
    r"(?:we |i )?will be there(?! (?:in|at|by|around|soon|late|shortly|\d))",
    r"(?:i |we )?can do(?: (?:that|it|this))?(?=\Z| thumbsup| no prob)",
    r"(?:(?:i|we|ill|well|can|will) )*make (?:it|that|this) work",
    r"lock (?:it|that|me) in",
    r"(?:(?:that|it|this) will|thatll|itll) (?:work|do)(?! (?:for|if|with) (?:you|yall|not)\b)",
    r"(?:we are|were|we) (?:still )?on(?=\Z| (?:boss|man|then|thanks|bro|buddy))",
    r"no doubt",
    r"not a bad idea",
    r"cant say no(?: to \w+)?",
    r"(?:i )?dont see why not",
    r"dont mind if i do",
    r"(?:i )?(?:wont|wouldnt) miss it",
    r"cant wait",
    r"no changes?(?! (?:the|my|it))",
    r"nothing (?:has |is )?changed",
    r"(?:please )?(?:dont|do not) cancel(?: \w+){0,3}",
    r"no (?:la )?cancel(?:en?|es)(?: \w+){0,3}",
    r"(?:no|nah) (?:yeah|yes)",
    r"no,? si (?:quiero|voy|puedo|me interesa)",
    r"ni modo",
    r"al ?righty?",
    r"of course",
    r"for sure",
    r"(?:ideal|bingo|sold|swell|grand|dandy|splendid|superb|peachy|suits|yes indeed)(?: (?:me|us|then|thanks))?\Z",
    r"(?:it|that)(?: (?:time|day|one|slot))? (?:suits|fits)",
    r"(?:that|it) would be (?:swell|grand|dandy|splendid|superb|lovely)",
    r"(?:grab|snag|nab|claim|hold|save) (?:it|that|that one|the spot|that spot)(?: for (?:me|us))?",
    r"hits the spot|done deal|could ?nt be better|you read my mind|(?:im|i am) all (?:in|for it)",
    r"might as well",
    r"(?:it|ok|oki|okey|ok ?) ?do(?:ky|key|kie|ki)",
    r"why the heck not",
    r"you (?:win|convinced me|got me|talked me into it)",
    r"(?:been |i have been )?meaning to (?:call|come|do|get|schedule)(?: \w+){0,4}",
    r"(?:if|since) (?:you|u) (?:think|say|recommend)(?: \w+){0,5} (?:then )?(?:ok|yes|sure|fine|lets)",
    r"(?:hell|heck|oh|fuck|f|damn) (?:yes|yeah|ya|yea)",
    r"im (?:down|up for it|on board|game|all for it)",
    r"(?:i )?(?:should|need to|gotta|better|ought to|could use|need) (?:\w+ )?(?:get|have|do|that|it|this|"
    r"an?) (?:\w+ ){0,6}(?:yes|yeah|yep|please|ya)",
    r"(?:id|i would|would) (?:really )?appreciate (?:that|it)",
    r"i need (?:that|it|one|this)(?: done)?",
    r"put me (?:down|in|on)",
    r"(?:that|it) would be (?:\w+ )?(?:great|good|fine|perfect|nice|awesome|ideal|helpful|wonderful|"
    r"lovely)",
    r"good idea",
    r"we(?: are|re) (?:still )?(?:good|on|set|coming) (?:for|then|to come)",
    r"still on(?! (?:\d+ ?(?:st|nd|rd|th)|\w+) (?:st|street|ave|avenue|road|rd|blvd|lane|drive|hwy|highway|main)\b)",
    r"mm?hm+",
    r"uh ?huh",
    r"(?:no worries|no problem) (?:ill|i will|see|we)",
    r"why the hell not",
    r"c(?= you|\Z)",
    r"yes+|yeah|yep|yup|y\Z|ye",
    r"yessir",
    r"yeppers",
    r"yesss*",
    r"sure",
    r"absolutely",
    r"definitely",
    r"def",
    r"of course",
    r"certainly",
    r"affirmative",
    r"for sure",
    r"you bet",
    r"bet",
    r"aye",
    r"roger(?: that)?",
    r"10[ -]4",
    r"confirm(?:ed|ing)?",
    r"correct",
    r"that is (?:right|correct)",
    r"why not",
    r"yes please",
    r"totally",
    r"indeed",
    r"please do",
    r"id love (?:to|that)",
    r"id like (?:that|to(?! (?:talk|speak|know|ask|discuss|complain|see (?:the|a|someone|somebody)|hear|understand|"
    r"file|report|cancel|"
    r"change|move|stop|be (?:taken|removed))\b))",
    r"let us do",
    r"lets (?:do|go|schedule|get|set|book)",
    r"go (?:ahead|for it)",
    r"do it",
    r"sign me up",
    r"im in",
    r"count me in",
    r"(?:please )?(?:book|schedule|fit|squeeze|pencil|put|get|set|slot) (?:me|us|it|her) (?:in|up|"
    r"down|for|on|an?)?",
    r"book it",
    r"set it up",
    r"schedule it",
    r"make (?:me |us )?an? appointment",
    r"ill (?:take (?:it|that|this)|be there|come in|bring (?:it|her)|do (?:it|that)|stop by|"
    r"swing by|come by|drop by|see you)",
    r"will do",
    r"see (?:you|u|ya|yall) (?:then|there|tomorrow|monday|tuesday|wednesday|thursday|friday|"
    r"saturday|at|on|in the|soon)",
    r"(?:still )?(?:good|works|fine|on|ok|coming|planning) (?:for|on|with) (?:me|us|it|that|"
    r"monday|tuesday|wednesday|thursday|friday|saturday|tomorrow|then|this|the)",
    r"works for (?:me|us)",
    r"that works",
    r"(?:it|this|still|time|day|both|all) works",
    r"^works",
    r"(?:id|i would|would|we would|wed|i|we) (?:really )?(?:like|want|love|"
    r"need) (?:to )?(?:an? )?(?:come|schedule|book|make an|set up|get (?:it|in|that|this|"
    r"them) ?(?:in|done|fixed|looked|checked|taken|scheduled)?|bring|appointment|do (?:it|that)|"
    r"have (?:it|that|them))",
    r"(?:can|could) (?:i|we) (?:schedule|book|make|set up|get|have) (?:an? |it |that |this |"
    r"my )?(?:appointment|in|done|scheduled|visit|looked|booked)",
    r"(?:im )?interested",
    r"(?:ok|okay) (?:ill|lets|yes|sure|book|great|sounds|do)",
    r"thumbsup",
    r"it (?:is )?a date",
    r"deal",
    r"still (?:good|on|coming|works|fine)",
    r"im (?:still )?(?:good|down|game|ready|available|free) (?:for|to|with|on|then|that)",
    r"that is (?:fine|good|great|perfect|ok)",
    r"(?:it is )?all good",
    r"no problem",
    r"no prob",
    r"np",
    r"happy to",
    r"i (?:do|will|can|am|guess(?: so)?|suppose(?: so)?|think so)\Z",
    r"i can (?:make (?:it|that)|do (?:it|that)|come)",
    r"looking forward",
)
_FUERTE = (
    r"dele(?: pues)?(?=\Z|[ ,.!])",
    r"jale(?=\Z|[,.!])",
    r"hagale",
    r"me (?:apunto|anoto)",
    r"si(?= pero cuanto)",
    r"de una",
    r"como no",
    r"esta perfecto",
    r"si (?:ocupo|me urge|hace falta)",
    r"(?:ta|esta) (?:bueno|bien|perfecto|chido|super)",
    r"(?:ahi|alla) (?:estamos|nos vemos|paso|los veo|llegamos|la veo|lo veo)",
    r"simon que si",
    r"arre|fierro|jalo|a (?:huevo|webo|wilson|guevo)|ahuevo|(?:ya|asi) (?:rugiste|dijiste)|venga(?=\Z|[,.!])",
    r"pues si",
    r"hag(?:a|ame|an|anme) (?:la |una )?(?:cita)?",
    r"si+",
    r"sip",
    r"claro(?: que si)?",
    r"por supuesto",
    r"simon",
    r"orale",
    r"andale",
    r"dale",
    r"sale(?: y vale)?(?! (?:muy|bien|mas|car|en|a |humo|agua|aceite|vapor|un|una|el|la|algo))",
    r"va(?= ?(?:\Z|que|[.,!]|por|perfecto|gracias|el|a las|nos))",
    r"vale|de acuerdo",
    r"esta bien(?! car[oa])",
    r"ta bien",
    r"me parece(?: bien| perfecto| bueno)?",
    r"por que no",
    r"porque no",
    r"con (?:mucho |todo )?gusto",
    r"seguro|adelante",
    r"(?:no se preocupen? )?(?:que )?no (?:la |lo |les |le )?(?:voy|vamos) a (?:cancelar|fallar|faltar|perder)\w*",
    r"desde luego|afirmativo",
    r"ok(?! (?:have a|enjoy|good ?night|later|bye|not|never|stop|no\b))",
    r"correcto|asi es|exacto",
    r"confirm(?:o|ad[oa]|amos)",
    r"me (?:sirve|queda(?: bien)?|interesa|conviene|funciona|gustaria|late|acomoda)",
    r"(?:agend|apunt|anot|reserv|program|apart|pong|met)\w*(?:me|nme|nos|mela|lo|la)?(?= |\Z)",
    r"quiero (?:\w+ )?(?:cita|agendar|llevarlo|hacerlo|ir|una)",
    r"hag(?:amos|amoslo|anlo|alo)",
    r"(?:ahi|alla) (?:estare|estoy|nos vemos|voy|estaremos|llego)",
    r"nos vemos",
    r"(?:si )?(?:quiero|puedo|voy|vamos|acepto|necesito|deseo)(?=\Z|[,.!]| (?:si|por favor|ir|"
    r"gracias|la cita|una cita))",
    r"ya estas",
    r"(?<!no )cuenten? conmigo",
    r"(?:sigo|sigue|seguimos) (?:firme|en pie|igual)",
    r"presente|sin falta|de volada|obvio|sip[io]|chevere",
    r"(?:cuento|contamos) con eso",
    r"(?:ahi|alla) (?:le|les) (?:llego|caigo|paso)",
    r"no (?:les |le |la |me la |los )?(?:voy a )?(?:fallo|fallar|faltar|perder|pierdo)",
    r"ni loco (?:la|lo|me la) pierdo",
    r"(?:dalo|delo|denlo) por hecho",
    r"(?:gracias )?voy a (?:ir|pasar)(?=\Z|[.,!]| gracias)",
    r"(?:sera|seria|es) un (?:gusto|placer)",
    r"ahi le caigo",
    r"sin problema",
    r"no hay problema",
    r"listo",
    r"lo (?:llevo|traigo)",
    r"hecho",
    r"(?:ahi |alla |ai )?(?:estare|nos vemos|voy) (?:si dios quiere|primero dios|dios mediante)",
    r"dios mediante",
    r"(?:esta )?cheque(?=\Z| ahi| alla)",
    r"vaya pues",
)
# No two alike, and none that is several others in a row: they are tried again and again, each way for each of them.
_WEAK = (
    r"ok",
    r"alright",
    r"all right",
    r"fine",
    r"good",
    r"great|cool|perfect|awesome|excellent",
    r"sounds? (?:\w+ )?(?:good|great|perfect|like a plan|fine|fair|reasonable|doable|awesome|ok|fun|lovely|amazing|"
    r"right|"
    r"nice)",
    r"wonderful",
    r"nice",
    r"please",
    r"sweet",
    r"fantastic",
    r"got it",
    r"right",
    r"good deal",
    r"very good",
    r"super",
    r"copy(?: that)?",
    r"understood",
    r"noted",
    r"ready",
    r"it is fine",
    r"that would be (?:\w+ )?(?:great|good|fine|perfect|nice|awesome)",
    r"yes sounds",
    r"bueno",
    r"perfecto",
    r"excelente",
    r"bien",
    r"muy bien",
    r"genial",
    r"por favor",
    r"entendido",
    r"enterad[oa]",
    r"que bien",
    r"buenisimo",
    r"padre",
    r"chido",
    r"suena bien",
)
_OPENER = (
    r"^(?:(?:hi|hello|hey|ok|oh|hola|um|well|so|and|pues|bueno|buenas|buenos|dias|tardes|good|"
    r"morning|afternoon|evening|thanks|gracias|alright|great|perfect|awesome|cool|please|sure|"
    r"actually|i guess|also|uh|sorry|mmm|hmm|ah|aah|then|yes|yeah|si|no wait|perfecto|"
    r"excelente|that|it|ese dia|claro|sir|no worries|omg|lol|wow|gosh|dude|man|bro|ay|uy|there|maam|dear|noches|"
    r"senorita|senor|senora|amigo|joven|oiga|mire|bendito) )*"
)
_STRONG_AT_START = Phrases(_OPENER, (*_STRONG, *_FUERTE), r"(?![a-z\d])")
_WEAK_ALONE = re.compile(
    _OPENER
    + "(?:"
    + "|".join(_WEAK)
    + r")(?: (?:"
    + "|".join(
        (
            *_WEAK,
            "for me",
            "with me",
            "to me",
            "by me",
            "then",
            "idea",
            "sir",
            "job",
            "day",
            "amigo",
            "senor",
            "para mi",
            "here",
        )
    )
    + r"))*\Z"
)
_FREE = phrases(
    r"book me\b",
    r"(?:add|put) me (?:to|on) (?:the|your) (?:schedule|calendar|books?)",
    r"si (?:quiero|voy|me interesa)\Z",
    r"si voy",
    r"(?:then|so|guess) (?:ok|yes|sure)\Z",
    r"set it up\Z",
    r"(?:get|have|do) (?:that|it|this) (?:\w+ ){0,4}(?:yes|yeah|yep|ya)\Z",
    r"that would be (?:\w+ )?(?:great|good|fine|perfect|nice|awesome|ideal|wonderful)",
    r"i need (?:that|it|this)(?: done)? (?:yes|yeah|please)",
    r"(?:please )?(?:book|schedule|sign) me (?:in|up|for|down)",
    r"works (?:great |fine |well |perfectly |perfect |good )?for (?:me|us)",
    r"that works",
    r"count me in",
    r"(?:id|i would) like to (?:come|schedule|book|make|set|bring)",
    r"(?:yes|yeah|yep)(?= (?:please|thanks|i|we|it|that|lets|sir|maam|ill|for|to|on|at|but|and))",
    r"lets do (?:it|that)",
    r"me parece bien",
    r"si por favor",
    r"agendeme",
    r"claro que si",
    r"ahi estare",
    r"(?:want|like|need) (?:to (?:schedule|make|book|set up) )?an appointment",
    r"(?:can|could) (?:i|we) (?:please )?(?:schedule|book|make|set up|get) an appointment",
    r"quiero (?:hacer |agendar |sacar )?(?:una )?cita",
    r"ill be there",
    r"thumbsup",
)
_NO = re.compile(
    r"\bmade sure\b|"
    r"\b(?:not|dont|doesnt|wont|cant|isnt|never|no(?! (?:much |real |other )?choice)) (?:\w+ ){0,2}(?:ok|good|great|"
    r"fine|sure|"
    r"interested|work|works|ready|right|perfect|correct|available|confirm\w*)\b|\bim (?:good|ok|"
    r"fine|all set|cool)\b(?! (?:for|with|to|on|then|that|at|either|any|tuesday|monday|friday))|"
    r"\bnot (?:sure|yet)\b|\bno (?:me )?(?:sirve|interesa|queda|parece|quiero|puedo|esta bien|"
    r"gracias)\b|\bok (?:no|not|never)\b|\bas if\b|\byeah (?:no|right)\b|\byeah,? (?:no|right)\b|"
    r"\bsi no\b|\bsure,? (?:not|no)\b"
)
_POLITE = frozenset({"please", "por favor", "thanks"})
"""What alone may be a yes, but not behind something else."""


def holds(said: Said) -> bool:
    """Whether a yes to what was asked stands in it."""
    if said.asked == "car" and said.has_car:
        return True
    if MOCKS.search(said.text):
        return False
    plain = said.text
    parts = [one for one in said.parts if not IF.match(one)]
    if any(_STRONG_AT_START.match(one) and not _NO.search(one) for one in parts):
        return True
    if _FREE.search(plain) and not _NO.search(plain):
        return True
    if said.asked is None or _NO.search(plain):
        return False
    if says_yes_within(plain):
        return True
    return any(_WEAK_ALONE.match(one) and not (one in _POLITE and len(parts) > 1) for one in parts)
