"""What role a clause plays that names a time: an answer, the customer's own day told beside it, or a time left behind.

`hay guy is coming Thursday, can I come Saturday at 8 instead` answers with Saturday; Thursday is why. `I was going to
say Tuesday but ...` leaves Tuesday behind. Only a clause beside another that answers is set aside: alone, it stands.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from enum import Enum

from followup.core.replies.mentions import Days, Hours, Instant, Mention, PartOfDay, Text
from followup.core.replies.on_first_use import OnFirstUse


class Role(Enum):
    """What a clause tells of the times in it."""

    BARE = "bare"
    """Nothing but times: an answer as short as it can be."""
    ASK = "ask"
    """It says that a time suits, or asks for it."""
    RULED_OUT = "ruled out"
    """It says in words that a time does not suit."""
    OWN = "own"
    """It tells of the customer's own day, or of somebody else's."""
    LEFT = "left"
    """It tells a time that another one takes the place of."""


@dataclass(frozen=True)
class Clause:
    """A part of the text with its role; `joint` is what stands before it."""

    start: int
    end: int
    joint: str
    role: Role


_WEEKDAY = (
    r"(?:mon|tues?|weds?|wednes|thu|thur|thurs|fri|sat|satur|sun)(?:days?)?|lunes|martes|miercoles|jueves|viernes|"
    r"sabados?|domingos?"
)
_SUBJECT = (
    r"i|im|ive|ill|id|we|were|weve|my|our|he|she|they|hes|shes|theyre|theyve|mi|mis|tengo|tenemos|trabajo|salgo|entro"
)
_NO_NEW_CLAUSE_AFTER = (
    r"(?<!after )(?<!once )(?<!when )(?<!while )(?<!before )(?<!if )(?<!that )(?<!than )(?<!where )(?<!until )"
    r"(?<!til )(?<!till )(?<!since )(?<!because )(?<!with )(?<!for )(?<!is )(?<!as )(?<!on )(?<!of )(?<!to )"
    r"(?<!in )(?<!at )(?<!and )(?<!but )(?<!so )(?<!can )(?<!could )(?<!should )(?<!would )(?<!do )(?<!que )"
    r"(?<!me )(?<!cuando )(?<!a )(?<!con )(?<!de )(?<!y )(?<!en )(?<!has )(?<!have )(?<!drop )(?<!bring )(?<!get )"
    r"(?<!got )(?<!soon )(?<!says )(?<!said )(?<!think )(?<!guess )(?<!ok )(?<!yes )(?<!yeah )(?<!either )"
    r"(?<!like )(?<!by )(?<!my )(?<!pick )(?<!day )(?<!time )(?<!take )(?<!takes )(?<!am )(?<!lunes )(?<!martes )"
    r"(?<!miercoles )(?<!jueves )(?<!viernes )(?<!sabado )(?<!manana )(?<!hoy )(?<!no )(?<!the )(?<!tambien )"
)
_CORRECTS = (
    r"no,? wait|oh,? wait|wait,? no|hold on|hang on|scratch that|actually no|no actually|oh no|ah no|"
    r"pero no,? espere?|no,? espere?|ay no|no no|(?:shoot|crap|dang|dangit|darn|damn|shucks|ugh|oops|whoops|rats|"
    r"doh),? no"
)
_JOINT = OnFirstUse(
    rf"(?P<corrects>\b(?:{_CORRECTS})\b)|[.!?;,\n]+| - |\b(?:but|pero|so|because|since|however|though|although|then|"
    r"porque|asi que|entonces|aunque|ya que|por eso|pues|instead of)\b|\band (?=(?:i|we|my|can|could|put|do|lets|"
    r"make|come|"
    r"move|get|book|set|schedule|then)\b|\w+day (?:i|we)\b)|\by (?=(?:l[oa]s?|me|nos|puedo|podemos|mejor|ponga\w*|"
    r"anot\w+|paso|que|de "
    r"ahi)\b)|\b(?=(?:can|could) (?:i|we|you|u|it)\b|how about\b|what about\b|lets\b|any (?:way|chance)\b|would "
    r"(?:it|you|that)\b|ill take\b|puede ser\b|se puede\b|podriamos\b|podemos\b|podria\b|mejor (?:el|la|en|a|para|"
    r"manana|otro)\b)"
    rf"|{_NO_NEW_CLAUSE_AFTER}\b(?=(?:{_SUBJECT})\b)"
)
_CAR = r"(?:it|her|him|that|this|(?:the|my|our) (?:\w+ )?(?:car|truck|van|suv|jeep|sedan|pickup|vehicle|ride|keys?))"
_ASKS = OnFirstUse(
    r"\b(?:can|could|would|may|might) (?:i|we|you|u|it|that|yall)\b|\b(?:i|we) (?:\w+ )?(?:can|could|will|might|may|"
    r"would|should)(?! (?:have|not)\b)\b|\b(?:ill|id)\b|\bhow about\b|\bwhat about\b|\blets\b|\bmake it\b|"
    r"(?:day|it|that|this|one|ones|time|am|pm|\d|morning|afternoon|noon|mon|tues?|wed|thurs?|fri|sat|tomorrow|today|"
    r"would|"
    r"might|should|could|will|really|\wteen|best|better) works?\b|\bworks? (?:for|best|better|great|fine|good|well|"
    r"out)\b|^works\b|"
    r"\b(?:good|fine|great|perfect|best|better|ideal|suits?|ok|okay|doable)\b|\b(?:free|open|available|flexible)\b|"
    r"(?<!get )(?<!gets )(?<!got )(?<!she is )(?<!he is )\boff\b(?! at\b)|\bprefer|\b(?:want|like|love|need)(?: to)? "
    r"(?:it|that|to|a|an|in)?\b(?! ?(?:to )?(?:be|leave|go|get to|pick|take my|work)\b)|\b(?:come|came|coming|comin|"
    r"swing|stop|"
    rf"drop|dropping|bring|bringing|be|run|park) (?:{_CAR} )?(?:in|by|over|off|down|there)\b|"
    rf"\b(?:drop|dropping|leave|leaving|bring|bringing|park) {_CAR}\b|"
    r"(?<!they )(?<!boss )\b(?:book|schedule|pencil|squeeze|fit|put|set|slot) (?:me|us|it)\b|"
    r"\b(?:choice|back ?up|fall ?back|option|plan [ab])\b|\bappointment\b|\bopenings?\b|\bsee (?:you|u|ya)\b|"
    r"\binstead\b|\bany ?(?:time|day)\b|\bwhenever\b|\beither\b|"
    r"\bplease\b|\bif (?:you|u|yall|possible|that|there)\b|\bdo (?:the )?(?:\d|mon|tue|wed|thu|fri|sat|sun|it)|"
    r"\b(?:say|mean|meant|said)\b|\btry\b|\bfirst "
    r"thing\b|"
    r"\bmaybe\b|\b(?:has|needs|have|got) to be (?:after|before|between|by|in the)\b|\b(?:have|got) (?:you|u|yall|"
    r"any\w*|some\w*)\b|"
    r"\b(?:is|are) there\b|\banything\b|\bsomething\b|\bthat would be\b"
    r"|\b(?:puedo|podria\w*|podemos|podre|se puede|puede ser|pueden|puede|podrian)\b|\bmejor\b|\besta bien\b|\bbien\b|"
    r"\bme (?:queda|sirve|acomoda|conviene|viene bien|gustaria)|\b(?:l[oa]|se l[oa]) (?:llev|traig|dej|pas|pon|pong|"
    r"mov|cambi)"
    r"\w+|\b(?:llevo|dejo|traigo) (?:el|la|mi) (?:carro|coche|auto|troca|camioneta|van)|"
    r"\b(?:paso|caigo|voy|vamos|iria|me doy)\b(?! (?:a (?:estar|trabajar|salir|recoger|la corte|misa)|al (?:doctor|"
    r"dentista|medico)))|"
    r"\bque (?:sea|tal)\b|\blibres?\b|\bdisponible|\bdescans|\bquiero\b|\bquisiera\b|\bprefier|"
    r"\bdice[ns]? que (?:el|la|en|mejor|para)\b|"
    r"\b(?:agend|anot|apunt|ponga|pasem|dejem|cambiem|muev)\w*|\bcita\b|\bfunciona|\bsirve|\bcualquier|\bperfecto\b|"
    r"\bde preferencia\b|\bpor favor\b|\bsi\b|\btien(?:en|es)\b|\btendr\w+|\balgo\b|\bhay (?:\w+ )?(?:lugar|espacio|"
    r"cita|chan\w+|"
    r"campo|hueco)|\b(?:dije|digo|quise decir)\b"
)
_RULES_OUT = OnFirstUse(
    r"\b(?:doesnt|does not|dont|do not|wont|will not|isnt)(?: (?:really|either|so much))?\W*$|\b(?:cant|cannot|"
    r"unable|busy|booked|tied up|unavailable|swamped|slammed|not (?:available|possible|good|free|"
    r"able)|no "
    r"good|wont work|doesnt work|dont work|does not work|is out|are out|im out|nope|too (?:early|late|soon)|(?:muy|"
    r"demasiado|bien) (?:temprano|tarde|pronto)|except|anything but|any day but|any "
    r"time but|other than|besides)\b|^\W*(?:not|no|never|just not|but not|nor)\b|\b(?:i|we|im|ill) (?:\w+ )?(?:not|"
    r"wont|"
    r"dont|never)\b|\bno (?:puedo|podemos|podria|me|nos|se puede|voy|vamos|tengo|estoy)\b|\bocupad|\bimposible\b|"
    r"\bmenos\b|\bexcepto\b|\bsalvo\b|\bni\b|\btampoco\b|\b(?:dia|lunes|martes|miercoles|jueves|viernes|sabado) no\b"
)
_EVENT = (
    r"court|class(?:es)?|game|practice|chemo|dialysis|dentist|doctors?|meeting|surgery|therapy|pt|funeral|wedding|"
    r"recital|"
    r"shift|exam|finals|rehearsal|church|choir|hearings?|showings?|jury duty|inventory|training|school|daycare|shower|"
    r"graduation|field trip|junta|culto|misa|partido|clases?|terapia|turno|guardia|bautizo|boda|corte|entrenamiento|"
    r"ensayo|velorio|quinceanera|dentista|doctor|escuela"
)
_OWN = OnFirstUse(
    r"\b(?:i|im|ive|we|weve|were|he|she|they|hes|shes|theyre|theyve|my|our|his|her|theres|somebody|someone|"
    r"everybody)\b|"
    r"^(?:\W*(?:and|also|cause|cuz|the|a|an|thats?|oh|um|well|yeah|no|ugh|then|por|que|ese dia|es que|wife|kid|kids|"
    r"boss|"
    rf"{_WEEKDAY}|today|tomorrow|hoy|manana|el|la|los|las|a|en|\d+))*\W*(?:(?!(?:{_WEEKDAY})\b)\w+ ){{1,4}}(?:is|"
    rf"isnt|are|"
    r"arent|was|has|have|got|gets?|comes?|coming|comin|leaves?|leaving|starts?|ends?|runs?|goes|lets|flies|flying|"
    r"arrives?|"
    r"needs|doesnt|meets?|rehearses?|practices?|plays?|closes?)\b|"
    rf"\b(?:got|have|had|working|teaching|leaving|flying)\b|\b(?:{_EVENT})\b|"
    r"\b(?:tengo|tenemos|tiene[ns]?|hay|trabaj\w+|salgo|sale[ns]?|salimos|entro|entra[ns]?|lleg[oa]n?|llegamos|"
    r"(?<!que )viene[ns]?|"
    r"vengo|estoy|estamos|esta[ns]?|ando|andamos|cuid\w+|viaj\w+|regres\w+|recojo|recogemos|doy clases?|damos|toca|"
    r"pusieron|"
    r"cambiaron|entregan|dieron|operan|llevo a|lleva[ns]?|es (?:mi|el|la)|necesito|ocupo|abro|cierro|juega[ns]?|duermo|"
    r"me voy|se va|vuel[ov]\w*|mi|mis|nos)\b"
)
_WAS_TO_BE = OnFirstUse(
    r"\b(?:was|were) (?:going to|gonna|thinking|hoping|planning|about to|wanting)\b|\b(?:wanted|hoped|planned|would "
    r"have|"
    r"wouldve)\b|\b(?:iba a|ibamos a|queria|queriamos|pensaba|estaba pensando|habia pensado|tenia pensado|hubiera)\b"
)
_CALLS_OFF = OnFirstUse(
    r"\b(?:cancel|scrap|drop|nix|skip|ditch|forget|lose|kill|cancelar|cancele\w*|cancelamos|cancelemos|quit[ae]\w*|"
    r"quitamos|borr\w+|olvid\w+) (?:lo |la |my |the |that |this )*(?:del? |el |la |cita |visita )*"
    rf"(?:{_WEEKDAY}|tomorrow|today|manana|hoy)\b"
)
_TURNING = ("corrects", "but", "pero")
_TURNS = re.compile(r"\b(?:but|pero|however|though|although|aunque|so|then|entonces|asi que)\b")
_ONLY_DAYS = re.compile(rf"\W*(?:(?:{_WEEKDAY}|and|y|or|o|el|los|on)\b\W*)+\Z")
_LAST_DAY = re.compile(rf"\b(?:{_WEEKDAY})\W*\Z")
_NUMBER = (
    r"(?:\d{1,2}(?::?\d\d)?(?: ?[ap]m)?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|noon|una|dos|tres|"
    r"cuatro|"
    r"cinco|seis|siete|ocho|nueve|diez|once|doce)"
)
_HOUR_ALONE = re.compile(rf"\W*(?:a las?|at|para las?|pa las?|by|como a las?) {_NUMBER}(?: y media| y cuarto)?\W*\Z")
"""Before a clause about the own day, without a mark between them, it belongs to that (`at 2 I pick up my kid`)."""
_TIME_WORDS = re.compile(
    rf"\W*(?:(?:{_WEEKDAY}|next|this|coming|on|the|in|el|los|las?|a|por|en|de|today|tomorrow|hoy|manana|mornings?|"
    r"afternoons?|evenings?|nights?|tarde|noche|also|y|and|both|well|ese dia)\b\W*)+\Z"
)
_PLACE = OnFirstUse(
    r"\b(?:first|second|third|last|latter|former|earlier|earliest|later|latest|other|1 ?st|2 ?nd|3 ?rd|early|late|"
    r"\w+day|mon|tues?|wed|thurs?|fri|sat|morning|afternoon) (?:one|option|slot|time|choice)\b|^\W*(?:the )?(?:first|"
    r"second|third|last|later|earlier)\W*$|\b(?:la|el) (?:primer[oa]?|segund[oa]|tercer[oa]?|ultim[oa]|otr[oa]|mas "
    r"(?:tarde|temprano))\b|\bthat one\b"
)


def clauses_of(plain: str) -> list[Clause]:
    """The clauses of a plain text in their order, each with its role as its words alone tell it."""
    cuts: list[tuple[int, int, str]] = [(0, 0, "")]
    for match in _JOINT.pattern.finditer(plain):
        word = "corrects" if match["corrects"] else match.group().strip()
        if match.start() > cuts[-1][1] or match.end() > match.start():
            cuts.append((match.start(), match.end(), word))
    bounds = [
        (cut[1], following[0], cut[2]) for cut, following in zip(cuts, [*cuts[1:], (len(plain), 0, "")], strict=True)
    ]
    found: list[Clause] = []
    before = ""
    for start, end, told in bounds:
        words, joint = plain[start:end], before if before in _TURNING else told or before
        if not words.strip():
            before = joint
            continue
        before = ""
        if found and joint in (",", "and", "y") and _ONLY_DAYS.match(words) and _ends_in_list(found, plain):
            found[-1] = Clause(found[-1].start, end, found[-1].joint, found[-1].role)
            continue
        role = _role(words)
        while role is Role.OWN and found and _is_fronted(plain[found[-1].start : found[-1].end], joint):
            fronted = found.pop()
            start, joint = fronted.start, fronted.joint
            role = _role(plain[start:end])
        found.append(Clause(start, end, joint, role))
    return found


def _is_fronted(words: str, joint: str) -> bool:
    """Whether these words only tell when what follows them is: a day or a part of it, an hour, the first of two "
    "days."""
    if joint == "and":
        return bool(_ONLY_DAYS.match(words))
    return not joint and bool(_TIME_WORDS.match(words) or _HOUR_ALONE.match(words))


def _ends_in_list(found: list[Clause], plain: str) -> bool:
    """Whether the last clause tells of the own day and ends with a weekday, which a list may go on."""
    return found[-1].role is Role.OWN and bool(_LAST_DAY.search(plain[found[-1].start : found[-1].end]))


_WITH_US = re.compile(
    rf"\b(?:{_WEEKDAY}|tomorrow|today|morning|afternoon) (?:\w+ )?appointment\b|\b(?:can|could) (?:i|we|you)\b"
)
_OWN_APPOINTMENT = OnFirstUse(
    r"\b(?:my|our|his|her|the kids?|their|mi|nuestra) (?!(?:next|service|oil|brake|tire|car|truck|other|"
    r"cita)\b)(?:[a-z]+ ){1,3}(?:appointment|appt) "
    r"(?:is|was|got)\b|\b(?:my|our|his|her) (?:appointment|appt) (?:with|at) (?!you|yall|the shop|ur)(?:\w+ "
    r"){1,3}(?:is|was)\b"
)
"""`my hearing aid appointment is Monday`: it is not with us."""


def _role(words: str) -> Role:
    if _RULES_OUT.pattern.search(words):
        return Role.RULED_OUT
    if "appointment" in words and _OWN_APPOINTMENT.pattern.search(words) and not _WITH_US.search(words):
        return Role.OWN
    if _WAS_TO_BE.pattern.search(words):
        return Role.LEFT
    if _ASKS.pattern.search(words):
        return Role.ASK
    return Role.OWN if _OWN.pattern.search(words) else Role.BARE


def without_asides(text: Text, found: list[Mention]) -> tuple[list[Mention], int]:
    """The mentions of the clauses that answer, and how many others were set aside.

    A day stays that only an aside names: `class till 2 on Tuesday, so 2:30`.
    """
    if not found or (len(found) == 1 and not text.setting.has_offer):
        return found, 0
    clauses = clauses_of(text.plain)
    if len(clauses) == 1:
        return found, 0
    places = [_clause_at(clauses, text.symbols[one.start].start) for one in found]
    roles = _roles(text, clauses, found, places)
    answers = [one for one, role in zip(found, roles, strict=True) if role in (Role.ASK, Role.BARE) and _is_told(one)]
    has_place = text.setting.has_offer and any(
        clause.role in (Role.ASK, Role.BARE) and _PLACE.pattern.search(text.plain[clause.start : clause.end])
        for clause in clauses
    )
    if not answers and not has_place:
        return found, 0
    kept = []
    for one, role in zip(found, roles, strict=True):
        is_aside = role is Role.OWN or (role is Role.LEFT and _has_same_kind(one, answers))
        if is_aside and role is Role.OWN:
            is_aside = not _is_still_told(one, answers, has_place)
        if not is_aside:
            kept.append(one)
    return kept, len(found) - len(kept)


def with_own_day(text: Text, kept: list[Mention], other: list[Mention]) -> list[Mention]:
    """The mentions with the day of the customer's own hours, where no other is told: `off at 3 Monday, so like "
    "3:30`."""
    is_open = text.setting.asked in ("visit", "day") and not any(isinstance(one.value, Days) for one in kept)
    if not is_open or not any(isinstance(one.value, Hours | PartOfDay) for one in kept):
        return kept
    days = [one for one in other if isinstance(one.value, Days) and one.value.weekday is not None and _is_told(one)]
    if not days:
        return kept
    clauses = clauses_of(text.plain)
    own = [one for one in days if clauses[_clause_at(clauses, text.symbols[one.start].start)].role is Role.OWN]
    return sorted([*kept, own[-1]], key=lambda one: one.start) if own else kept


def _is_told(one: Mention) -> bool:
    return not (isinstance(one.value, Days) and (one.value.is_later or not one.value.days)) and not isinstance(
        one.value, Instant
    )


def _is_still_told(one: Mention, answers: list[Mention], has_place: bool) -> bool:
    """Whether an aside tells what no answer does: the day, the hour from which the customer can, when to ask again."""
    if isinstance(one.value, Days):
        return one.value.is_later or not (has_place or any(isinstance(other.value, Days) for other in answers))
    has_hour = any(isinstance(other.value, Hours | PartOfDay) for other in answers)
    return isinstance(one.value, Hours) and one.value.kind == "after" and not (has_hour or has_place)


def _has_same_kind(one: Mention, answers: list[Mention]) -> bool:
    """Whether an answer behind a time tells one of its kind, a day or an hour."""
    return any(
        other.start > one.start and isinstance(other.value, Days) == isinstance(one.value, Days) for other in answers
    )


def _clause_at(clauses: list[Clause], place: int) -> int:
    return max((number for number, one in enumerate(clauses) if one.start <= place), default=0)


def _roles(text: Text, clauses: list[Clause], found: list[Mention], places: list[int]) -> list[Role]:
    """The role of each mention: that of its clause, or left behind where what follows the clause says so."""
    roles = []
    for place in places:
        role = clauses[place].role
        later = clauses[place + 1 :]
        words = text.plain[clauses[place].start : clauses[place].end]
        is_corrected = bool(later) and later[0].joint == "corrects" and role in (Role.ASK, Role.BARE)
        is_called_off = role is not Role.OWN and any(one.role is Role.ASK for one in later)
        if is_corrected or (is_called_off and _CALLS_OFF.pattern.search(words)):
            role = Role.LEFT
        elif role is Role.LEFT and not any(_TURNS.search(one.joint) or one.joint == "corrects" for one in later):
            role = Role.ASK
        roles.append(role)
    return roles
