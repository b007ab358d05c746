"""Days, hours and numbers that are told for something else than the visit, taken out before visit times are read.

What stays is the same text with those words left out, so that `the night before for Thursday` names Thursday alone.
"""

from __future__ import annotations

import re

from followup.core.replies.own_day import without_own_hours
from followup.core.replies.symptoms import reports

_SIDE = re.compile(
    r"\b(?:lease|leese) (?:is |will be |gets? )?(?:up|over|done|ends?|ending|expires?|runs? out) (?:in (?:\w+ "
    r"){1,2}?(?:days?|weeks?|"
    r"months?|years?)|(?:in|on|next|this) (?:the )?\w+)\b|"
    r"\b(?:is|does|will|would) (?:it|that|this) (?:\w+ ){0,2}(?:under|over|less than|more than) (?:an?|one|two|three|"
    r"\d+|half an) "
    r"(?:hours?|hrs?|minutes?|mins?)\b|"
    r"\bthis morning (?=(?:the|my|it) (?:\w+ ){1,3}(?:went|started|was|made|felt|sounded|died|did|wouldnt|didnt|"
    r"dropped|sank)\b)|"
    r"\b(?:las|los) (?:2|dos|4|cuatro) (?=(?:llantas? )?(?:de )?(?:atras|adelante|enfrente|delante)\b)|"
    r"(?<=of my )(?:day|morning|afternoon)\b|(?<=there )all (?:day|mornin\w*|afternoon)\b|(?<=refund )(?:from|since) "
    r"(?:back in )?(?:january|february|march|"
    r"april|may|june|july|august|"
    r"september|october|november|december)\b|"
    r"\blos dos (?=(?:el|este) (?:lunes|martes|miercoles|jueves|viernes|sabado))|"
    r"\b(?:the )?(?:night|evening) before\b(?: for| of)?|\bla noche (?:antes|anterior)(?: (?:del?|al?))?"
    r"|\b(?:(?:mon|tues|wednes|thurs|fri|satur|sun)day|the|tomorrow) (?:night|nite|evening|eve)\b(?= (?:\w+ "
    r"){0,5}for (?:a |my |the )?"
    r"(?:mon|tues|wednes|thurs|fri|satur|sun)day)"
    r"|\b(?:the )?next (?:day|morning) pick ?up\b"
    r"|\b(?:after|in|for|since) \d+ (?:visits?|times|tries|attempts)\b"
    r"|\b(?:wait\w*|sat there|was there|esper\w+|tard\w+) (?:\w+ ){0,3}(?:\d+|an?|una?) (?:hours?|horas?)\b"
    r"|\b(?:done|ready|finished|in and out) in (?:an?|one|two|\d+|half an?|a couple(?: of)?) "
    r"(?:hours?|minutes?|mins?|days?|hrs)\b"
    r"|\b(?:quit|stopped|quitting) smoking\b"
    r"|\blo del? (?:manana|hoy|lunes|martes|miercoles|jueves|viernes|sabado)\b"
    r"|\b(?:cobr|factur|pag|carg)\w+ (?:por )?(?:\d+|una?|dos|tres|cuatro) (?:horas?|dias?)\b"
    r"|\b(?:that is|thats|which is|that was) (?:right |just |exactly |even )*(?:after|before|during|on|at)? ?"
    r"(?:my |the )(?:\w+ )?(?:shift|lunch|lunch break|break|lunch hour|day off)\b"
    r"|\b(?:una?|dos|tres|cuatro|cinco|media|\d+) (?:horas?|dias?)(?: y media)? (?:\w+ )?(?:me|nos|lo|la) "
    r"(?:tuvieron|hicieron|dejaron|tardaron|tomaron|traen|trajeron)\b"
    r"|\b(?:tuvieron|hicieron esperar|tardaron|esperando) (?:\w+ ){0,3}(?:una?|dos|tres|cuatro|\d+) (?:horas?|dias?)\b"
    r"|\b(?:el )?(?:domingo|noche|lunes|martes|miercoles|jueves|viernes|sabado|manana|hoy) (?:en la |por la )?noche\b"
    r"(?= (?:\w+ ){0,5}(?:llave|buzon|caja|cajita|ranura))"
    r"|(?<=llave )(?:desde )?(?:el )?(?:domingo|lunes|martes|miercoles|jueves|viernes|sabado|manana|hoy) (?:en|por) "
    r"la noche\b"
    r"|\bson las (?:\d+|una|[a-z]{3,6}) (?:y media )?de la (?:manana|noche|madrugada)\b"
    r"|(?<=\d )(?:los|las) dos\b(?= (?:despues|antes|por|en la|de la|temprano))"
    r"|\bon a scale of \d+ to \d+\b"
    r"|\b(?:pack|bring|eat|grab|skip|buy)(?:ing)? (?:a |my |some |the )?lunch\b"
    r"|\b(?:an? |my |one )lunch (?:hour|break) (?:kinda |kind of |sort of )?(?:thing|job|deal)\b"
    r"|\b(?:done|finished|in and out) (?:in|within|over) (?:a |my |one )?lunch(?: hour| break)?\b"
    r"|(?<!check )(?<!try )(?<!come )(?<!circle )(?<!get )(?<!me )(?<!be )(?<!im )(?<!touch )(?<!us )\bback in "
    r"(?:january|february|march|april|may|june|july|august|september|october|november|december)\b"
    r"|\b(?:mon|tues?|weds?|wednes|thurs?|fri|satur|sat|sun)(?:day)? (?:night|nite|evening)\b(?=[^.?!]*\b(?:keys?|"
    r"drop ?box|in the "
    r"(?:box|slot|chute))\b[^?!]*\b(?:mon|tues?|weds?|wednes|thurs?|fri|sat)(?:day)?\b)(?![^?!]*\b(?:back|pick)\b)"
    r"|\bnight (?:slot|drop ?box|drop|box)\b"
    r"|\b(?:queda|vivo|estoy|esta|vive|live|lives|its|am) (?:ahora |como )?a \d+ (?:horas?"
    r"|minutos?)(?! (?:de|para) la)\b"
    r"|\b(?:una?|uno|ningun[oa]|cualquiera|primer[oa]|segund[oa]|ultim[oa]|temprano|tarde|"
    r"mejor) de (?:las|los) (?:dos|tres|de)\b"
)
_CLAUSES = re.compile(r"((?:[.!?;,\n]+|\b(?:but|pero|and|because|porque)\b))")
_VISIT = re.compile(
    r"\b(?:works|work for|ok|fine|good|bring|come|can|could|drop|available|appointment|book|schedule|look at|"
    r"check it|free|"
    r"puedes|podran?|podrian?|podria[ns]?|checar\w*|checan|verlo|revis\w+|puedo|pueden|puede|llevo|llevar\w*|bien|"
    r"sirve|cita|funciona|traigo|paso|reviso|revisen|chequen)\b"
)
"""What shows that a clause about a symptom speaks of the visit too: `on thursday it shook` names no visit."""


_ROGER = re.compile(r"^10[- ]4(?=\W|$)")
"""The radio word for a yes, where no hours were asked."""
_MARKS = re.compile(r"\b10 ?/ ?10\b")


_TIME = (
    r"(?:\d{1,2}(?::[0-5]\d)?(?: ?[ap]m)?|noon|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|mornings?|"
    r"afternoons?|(?:mon|tues|wednes|thurs|fri|satur)days?|tomorrow|today)"
)
_BEATS = re.compile(
    rf"\b(?P<hour>{_TIME}) (?:would |will |really |is |are |might |actually |definitely |works? |suits? |fits? "
    rf")*(?:me |us )?"
    r"(?:be |way |much |a lot |far )*(?:beats?|(?:better|easier|nicer|preferable|more convenient)(?: for (?:me|us))? "
    r"(?:than|to)|over)"
    rf" (?:the |at )?{_TIME}\b"
)
"""`Eleven would beat nine`: the time after it is the one that is not wanted."""


_TOO_FOR_US = re.compile(
    r"^(\W*(?:uy |no |ay |uff |bruh |dude |man )*(?:esta|es|queda|sale|seria|se me hace|thats?|that is|it is)?) "
    r"?(?:muy|bien|re|demasiado|"
    r"bastante|way too|way|super|too) (?:temprano|tempranito|tarde|early|late)\b(?! (?:en|por|el|in|on|mejor|por "
    r"favor|please)\b)"
)
"""What is said of an offer and names no part of the day."""


_CHANCE_OF = re.compile(r"\bchance of (?=\d{1,2}(?::\d\d)?\b(?! ?(?:min|percent|%|day|week)))")
_LATER_TODAY = re.compile(r"\bahorita (?=(?:en|por) la (?:tarde|manana|noche)\b)")


def _preferred(match: re.Match[str]) -> str:
    hour = match["hour"]
    return (
        f"at {hour}"
        if re.match(r"\d|(?:noon|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)$", hour)
        else hour
    )


def without_side_times(plain: str, asked: str | None = None) -> str:
    """The plain text without what names no visit time."""
    if asked in ("confirm", "walk_in", "car", "confirm_stop"):
        plain = _ROGER.sub(" ", plain)
    if asked == "after_visit":
        plain = _MARKS.sub(" ", plain)
    if "chance of" in plain:
        plain = _CHANCE_OF.sub("at ", plain)
    if "ahorita" in plain:
        plain = _LATER_TODAY.sub("hoy ", plain)
    plain = _BEATS.sub(_preferred, without_own_hours(plain))
    if asked == "slot":
        plain = _TOO_FOR_US.sub(r"\1", plain)
    left = _SIDE.sub(" ", plain) if _SIDE.search(plain) else plain
    if reports(left):
        left = "".join(part for part in _CLAUSES.split(left) if _VISIT.search(part) or not reports(part))
    return " ".join(left.split())
