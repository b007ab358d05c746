"""Words about our texts that come short of taking the consent back: one subject only, too many, a bad hour, never."""

from __future__ import annotations

from followup.core.replies.said import phrases

_STOPPING = (
    r"(?:stop|quit|dont|do not|no more|never|enough|cease|lay off|no need|please no|cut back on|"
    r"fewer|less|ease up|limit)"
)
_TEXTING = r"(?:text\w*|messag\w*|send\w*|contact\w*|remind\w*|notif\w*|bother\w*|bug\w*|alerts?|asking|ask)"
_MINDED = phrases(
    r"(?:tone|dial|ease) (?:it|them|this|that|things)? ?(?:down|back|off|up)(?! (?:\w+ ){0,2}(?:price|bill))",
    r"(?:tone|ease|slow|cut|dial)(?: it)? (?:down|up|back|off) (?:on |with )?(?:the |these |those |your )?(?:texts?|"
    r"messages?|"
    r"reminders?|texting)",
    r"(?:\d+|two|three|four|five) (?:of (?:these|those|them) |texts? |messages? |reminders? )(?:a|per|in a|in one|"
    r"every) (?:day|week|"
    r"month)",
    r"(?:third|second|fourth|fifth|\d+ ?(?:rd|th|nd)) (?:one|of these|time)(?: \w+)? (?:today|this week|already)",
    r"(?:once|one|1|one text|one message) (?:a|per|every) (?:month|week|year) (?:is|would be) (?:enough|plenty|fine|"
    r"ok|good|all)",
    r"(?:con )?(?:uno?|1|un mensaje|un texto|una vez|un recordatorio) (?:al|por|a la|cada) (?:mes|semana|ano) "
    r"(?:basta|es "
    r"suficiente|esta bien|me basta|alcanza|y ya)",
    r"(?:no|ni) (?:es necesario |hace falta |hay necesidad )?(?:tan seguidos?|tantos(?: (?:mensajes|textos))?\Z|cada "
    r"(?:semana|dos dias|"
    r"tres dias|rato))",
    r"not (?:every (?:\w+ ){0,2}(?:days?|week)|this many|that many|that often)",
    r"no need to (?:text|message|remind)(?: me| us)? every(?: \w+){0,2}",
    r"(?:text|message|remind)\w* (?:me )?(?:way )?too (?:often|much)",
    r"cada (?:\w+ )?(?:dias|rato|semana) (?:me |nos )?(?:escrib|mand|text|lleg)\w+",
    r"(?:\d+|dos|tres|cuatro|cinco) (?:mensajes|textos|recordatorios|avisos) (?:a la|por|cada) semana",
    r"(?:texts?|messages?|reminders?) (?:\w+ )?twice",
    r"once is (?:plenty|enough)",
    r"(?:text|message)s? (?:me )?more than(?: \w+){0,3}",
    r"texting (?:\w+ ){0,3}at (?:\d|night|midnight|dawn)",
    r"keep it to (?:daytime|business hours|working hours|days|the day)",
    r"(?:third|second|fourth|fifth|tenth|\d+ ?(?:rd|th|nd)) (?:text|message) (?:today|this week|already)",
    r"mensajes (?:bien|muy|tan) (?:tarde|temprano|noche|seguido)",
    r"not so many(?: \w+)?",
    r"(?:llegan|mandan|envian|escriben) (?:\w+ )?(?:muchos|demasiados|tantos) (?:mensajes|textos|"
    r"recordatorios)",
    r"(?:one|a) (?:text|message) (?:a|per|every) (?:month|week|year) is (?:enough|plenty|fine)",
    r"(?:escrib|mand|envi|text)\w+ (?:\w+ ){0,2}(?:en la noche|de noche|tan noche|de madrugada|tan tarde|"
    r"tan temprano)",
    rf"{_TEXTING} (?:\w+ ){{0,5}}(?:so|too|this|that) (?:much|many|often|early|late|frequently)",
    r"(?:so|too|this|way too) (?:many|much) (?:(?!to )\w+ )?(?:texts?|messages?|reminders?|texting|notifications?)",
    rf"{_STOPPING} (?:\w+ ){{0,2}}{_TEXTING} (?:\w+ ){{0,3}}(?:every ?day|at night|after \d+|"
    rf"before \d+|in the middle|on (?:the )?(?:weekends?|sundays?)"
    r"|(?:when|while) im (?:at work|working|sleeping|asleep|driving)|(?<!im )at work|during (?:work|"
    r"the day|dinner)|before noon|twice|at this hour|at midnight|in the morning|at dinner)",
    r"(?:texts|messages|texting|reminders) (?:\w+ ){0,2}(?:on|during) (?:a |the |my )?(?:sundays?|saturdays?|"
    r"weekends?|holidays?|church|nights?)",
    r"(?:mand|envi|escrib|text|molest|recib)\w+ (?:\w+ ){0,3}(?:en|los|el|un|de) (?:domingos?|sabados?|fines? de "
    r"semana|dias? festivos?|dia de descanso)",
    r"(?:text|message)\w* (?:\w+ )?(?:less|fewer)(?: often)?",
    r"(?:fewer|less|not as many|not so many) (?:texts?|messages?|reminders?)",
    r"(?:once|one text) (?:is|was) enough",
    r"(?:texts?|messages?) (?:\w+ ){0,2}(?:every (?:single )?day|all the time|at night|"
    r"at \d+ ?(?:am|pm)|constantly|nonstop)",
    r"(?:tantos|demasiados|muchos) (?:mensajes|textos|recordatorios)",
    r"(?:mand\w+|envi\w+|escrib\w+|text\w+|molest\w+) (?:\w+ ){0,4}(?:tan (?:temprano|tarde|"
    r"seguido)|a cada rato|tanto|de noche|en la noche|de madrugada|todos los dias|a esta hora|"
    r"a estas horas|en el trabajo|mientras trabajo|los domingos)",
    r"tan (?:seguido|temprano|tarde) (?:\w+ )?(?:mensajes|textos)",
    r"menos (?:mensajes|textos|recordatorios)",
    r"(?:escriben?|mandan?|textean?) (?:mensajes? )?(?:muy|bien|tan|re) temprano",
    r"(?:\d+|dos|tres|cuatro|cinco) (?:mensajes|textos|recordatorios|avisos) (?:en|el mismo|al|por) (?:\w+ "
    r")?(?:dias?|horas?|"
    r"semanas?|rato|mes)",
    r"(?:a cada rato|diario|todos los dias|cada dia|cada rato) (?:\w+ ){0,2}(?:mand|escrib|envi|text|lleg)\w+ "
    r"(?:\w+ )?(?:mensajes?|"
    r"textos?|cosas|recordatorios)",
    r"(?:ya )?van (?:\d+|dos|tres|cuatro|cinco) (?:mensajes|textos|avisos|recordatorios)",
    r"(?:no|ni) son horas|que horas son estas|vaya horas|horas de (?:estar )?(?:escrib|mand|text|molest|despert)\w+",
)
_SERVICE = (
    r"(?:oil(?: change)?|brakes?|tires?|alignment|rotation|inspection|battery|filter|coolant|belt|transmission|wipers?|"
    r"emissions?|smog|tune ?up|fluid|flush|recall)"
)
_SUBJECT = phrases(
    r"(?:stop|quit|no more|enough) (?:with )?(?:the|those|these|your|any|of the) (?!texts?\b|messages?\b|"
    r"reminders?\b|same\b|robo\b|robot\b|auto\w*|spam\w*|nonstop\b|endless\b|daily\b|dumb\b|silly\b|damned\b|"
    r"freaking\b|useless\b|junk\b|text\b|"
    r"damn\b|constant\b|annoying\b|stupid\b)(?:\w+ ){1,2}(?:texts?|messages?|"
    r"reminders?|ones|stuff)",
    r"(?:solo|nomas|nada mas) (?:mand|envi|escrib|text|avis)\w+ (?:\w+ ){0,2}(?:de|sobre|por|para|"
    r"cuando)(?: \w+){0,4}",
    r"ya no (?:de|sobre|los de|las de) (?:el |la |los |las )?\w+",
    r"(?:quit|cancel|suspend|desactiv|elimin|borr|apag|par(?!a\b))\w* (?:\w+ )?(?:los |esos |sus )?(?:mensajes|"
    r"textos|avisos|"
    r"recordatorios|notificaciones|los) (?:sobre|del?) (?:el |la |los |las |lo de )?(?!ustedes|sus?\b|est[aeo]\b|"
    r"taller|"
    r"parte|texto|promo|publicidad|spam|aqui|mi\b|inmediato|una|ya\b|cita|lista)\w+",
    r"(?:ya )?no (?:me |nos )?(?:pregunt|habl|insist|dig|avis|busqu|ofrezc|salg)\w+ (?:\w+ )?(?:sobre|del?|con|lo "
    r"del?) (?:el |la "
    r"|los |las |lo del? )?(?!ustedes|usted|nuevo|favor|nada|esto|eso|tu\b|mi\b|donde|que\b|tant|sus?\b|mensaj|text|"
    r"mas\b)\w+",
    r"(?:lo )?(?:del?|sobre|con lo del?) (?:el |la |los |las |mis? )?(?!ahora|hoy|ustedes|usted|aqui|favor|plano|"
    r"verdad|una|ya\b|ahi|"
    r"su\b|sus\b|este|esta|tant|mensaj|text)\w+ (?:ya )?no (?:me )?(?:l[oae]s? )?(?:mand|escrib|envi|habl|pregunt|"
    r"text|avis)\w+",
    r"(?:ya )?no (?:me |nos )?ofrezcan? (?!nada|mas\b|eso\b)(?:\w+ )?\w+",
    r"only (?:text|message|contact|send)(?: me)? (?:about|for|when|if|regarding)(?: \w+){0,4}",
    rf"{_STOPPING} (?:\w+ ){{0,2}}{_TEXTING} (?:\w+ ){{0,2}}(?:about|for|regarding|re|on) (?:the |"
    rf"my |that |this )?(?!it\b|me\b|us\b|this\b|that\b|everything|anything|all\b|car\b|vehicle|number|now|"
    rf"good|a while|ever)\w+",
    rf"(?:(?:dont|do not) (?:send|text)|stop sending|quit sending|no more)"
    rf"(?: (?:of|me|us|any|more|the|those|these|your))* {_SERVICE} ones",
    rf"(?:stop|quit|no more|enough|cancel|cut|(?:dont|do not) (?:need|want|send))(?: (?:with|of|me|any|more|the|these|"
    rf"those|your|out))* {_SERVICE} (?:\w+ )?(?:texts?|messages?|reminders?|notices?|alerts?)",
    rf"(?:leave|keep|cut|skip|drop) (?:out |off )?(?:the |those |these |all )?{_SERVICE} (?:\w+ )?(?:stuff|things?|"
    rf"bits?|"
    rf"parts?|ones?|talk|news)(?: (?:out|off|to yourself))?(?= (?:from now|next time|in (?:the )?future|"
    rf"going forward|of "
    rf"(?:the |your )?(?:texts?|messages?))|(?<=out)\Z)",
    r"no more (?:\w+ )?(?:texts?|messages?|reminders?) (?:about|for|on) (?:the |my )?(?!it\b|me\b|us\b|now\b|"
    r"this\b|that\b|anything)\w+",
    r"(?:no me|ya no|dejen de|ya no me|no) (?:\w+ )?(?:mand\w+|envi\w+|escrib\w+|record\w+|"
    r"molest\w+) (?:\w+ ){0,2}(?:sobre|de|por|acerca de|con) (?:el |la |los |las |"
    r"lo de )?(?!mas\b|sus?\b|tus?\b|tant\w+|es[oa]s\b|est[oa]s\b|text\w+|mensaj\w+|texto\b|textos\b|mensajes?\b|"
    r"sms\b|este\b|celular\b|telefono\b|ahora\b|fa\b|whats\w*|"
    r"nuevo|este numero|esto\b|eso\b|favor|nada|nuevo|aqui|parte|ustedes|"
    r"su parte)\w+",
)
_FOR_GOOD = phrases(
    r"(?:i|we) (?:will |would )?never (?:be back|be coming|return|set foot|do business|step)(?: \w+){0,3}",
    r"(?:i|we) (?:wont|will not) (?:ever )?(?:be back|return|come back|be returning)",
    r"no (?:i|and i|we) never will",
    r"(?:and )?i never will",
    r"not (?:interested )?(?:now )?(?:or |and )?ever(?: again)?",
    r"never (?:again|ever|interested|coming back|going back|will|going to happen|gonna happen)",
    r"(?:wont|will not|not) (?:\w+ ){0,2}ever (?:\w+ ){0,2}(?:again|come|need|want)",
    r"(?:i|we) (?:will )?never (?:want|need|will|come|go|use)",
    r"dont (?:ever )?ask (?:me )?(?:ever )?again",
    r"(?:no|not) (?:now )?(?:and )?not (?:later|ever)",
    r"no (?:ahora )?ni (?:nunca|despues|luego)",
    r"ni (?:ahorita|ahora|hoy|manana|orita|horita) ni (?:nunca|despues|luego|jamas)",
    r"nunca mas",
    r"jamas(?! (?:he|ha|han|hemos|lleve|fui)\b)",
    r"nunca (?:me va|(?:\w+ ){0,2}(?:voy a|vamos a)|volvere|regresare)",
    r"not now not ever",
    r"dont ask again",
)


def minds_number_or_hour(plain: str) -> bool:
    """Whether it minds only how many texts come, or when."""
    return bool(_MINDED.search(plain))


def is_about_one_subject(plain: str) -> bool:
    """Whether it takes back only texts about one subject."""
    return bool(_SUBJECT.search(plain)) and not minds_number_or_hour(plain)


def is_for_good(plain: str) -> bool:
    """Whether it is a no for all later times."""
    return bool(_FOR_GOOD.search(plain))


def is_short_of_a_stop(plain: str) -> bool:
    """Whether any of these stands in it: then we ask whether to stop."""
    return minds_number_or_hour(plain) or is_about_one_subject(plain) or is_for_good(plain)
