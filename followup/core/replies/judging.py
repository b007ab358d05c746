"""Whether a mentioned time is a visit time at all, is ruled out, or is taken back by the text itself."""

from __future__ import annotations

import re

from followup.core.replies.mentions import Days, Mention, Text

_CLAUSE_END = re.compile(
    r"[.!?;\n]|\b(?:but|pero|although|aunque|so|how about|what about|que tal|or maybe|instead|because|porque)\b"
)
_NOT_BEFORE = re.compile(
    r"\b(?:cant|not|wont|no|dont|doesnt|isnt|except|never|unable|anything but|any day but|"
    r"any time but|busy|booked|tied up|unavailable"
    r"|no puedo|menos|excepto|tampoco|salvo|ocupad[oa]|out of town|away|im off|im out|nor|neither|"
    r"any ?(?:day|time|thing)? ?(?:but|except|other than|besides)|ni)\b"
)
_NOT_REALLY = re.compile(
    r"\b(?:no (?:worries|worry|problem|prob|problema|issues?|doubt|rush|hay problema|pasa nada)|"
    r"why not|porque no|not only|dont mind|dont care|dont forget|cant wait|"
    r"cant (?:you|we|i)|couldnt|no thanks|if not|if its not|why dont|not (?:a )?(?:problem|bad)|"
    r"whether or not|no se si|not sure if|dont know if|not too|no mas|nomas|cant complain|no (?=i|"
    r"we|que|mejor|wait|espera|perdon|sorry)|wait no|no no|not today but)\b"
)
_NOT_AFTER = re.compile(
    r"^(?:\W*(?:at|is|are|im|am|was|the|all|day|i|that|it|just|really|unfortunately|sorry|me|"
    r"definitely|probably|se|le|ese|dia|esta|for me|morning|afternoon|one|evening|and \w+day|"
    r"or \w+day|slot|time|works?)\b){0,4}\W*"
    r"(?:doesnt|does not|dont|wont|isnt|is not|is no|no good|not good|is bad|no me|not work|"
    r"not gonna|not going|im busy|i cant|cant|am busy|is out|isnt good|not possible|is booked"
    r"|no puedo|no me|no se puede|imposible|impossible|is too|im working|i work\b|not available|"
    r"no go|aint|wouldnt|would not|are no|are out|are bad|estoy ocupad|trabajo|tengo|"
    r"out of the question|is tough|is hard|is rough|wont do|busy|no work|a no)\b"
)
_NO_VISIT_BEFORE = re.compile(
    r"\b(?:call|phone|ring|text|llame\w*|llama\w*|marque\w*|marca\w*|marcar\w*|hablen\w*|"
    r"contact) (?:me |us |back |him |her |my \w+ |to me |a mi )+(?:back |again )?(?:\w+ ){0,2}$"
    r"|\b(?:llame\w*|llame[nm]\w*|marque\w*|hablen\w*|please call|pls call|can you call|could you call) (?:\w+ ){0,2}$"
    r"|\b(?:need|want|have|get|got to have|necesito|ocupo|quiero)\b (?:\w+ ){0,4}(?:back|done|"
    r"ready|finished|listo|lista|out|de vuelta)\b[^,.]{0,12}$"
    r"|\b(?:pick(?:ing)?|get) (?:it|her|him|the car|my car|my \w+|"
    r"the \w+)(?: back)? ?(?:up)?\b[^,.]{0,10}$|\bpick(?:ing)? up\b[^,.]{0,22}$|\brecoger(?:lo|"
    r"la)?\b[^,.]{0,18}$"
    r"|\b(?:my|our|the|mi|nuestro|un) (?:trip|flight|vacation|road trip|surgery|wedding|viaje|"
    r"vuelo|boda|payday|birthday|shift|turno|interview|lease|registration|tags|warranty|kids? \w+|"
    r"school|class)\b[^,.?]{0,25}$"
    r"|\b(?:leaving|leave (?:for|town|on a|work)|(?:we|i|ill|we will) leave (?!it|the|my|her|him)|"
    r"fly(?:ing)?|travel(?:ing)?|salgo de viaje|me voy|viajo|driving to \w+|heading out|"
    r"out of town)\b[^,.?]{0,22}$"
    r"|\b(?:i|we|he|she) (?:get off|get out|work|am working|got off|start work|finish work|"
    r"am at work|am in \w+)\b[^,.?]{0,18}$|\b(?:salgo|trabajo|entro)\b[^,.?]{0,18}$|"
    r"\boff (?:work )?at $"
    r"|\b(?:have to be|need to be|gotta be|got to be|must be|supposed to be|tengo que estar) (?:\w+ ){0,4}$"
    r"|\b(?:have|got|i have|tengo) (?:a|an|my|un|una|another|to get|to take|to pick)\b (?!chance|"
    r"minute|time|question|day|slot|appointment|opening|available|open|free|spot|booking|"
    r"reservation|table|oil|visit|service|check|inspection|reminder|place|seat|space|early|late|"
    r"morning|afternoon)[^,.?]{0,30}$"
    r"|\b(?:bought|did|had|got|replaced|changed|since|was|were|born|sold|traded|purchased|compre|"
    r"vendi|hice|hicieron|cambie|cambiaron|desde|paid|serviced|last|checked|expires?|due|vence|"
    r"told me|said|quoted|brought)\b (?:\w+ ){0,5}$"
    r"|\b(?:done|ready|finished|listo|lista) (?:before|by|antes)?[^,.?]{0,6}$|\b(?:wont|doesnt|"
    r"dont) take (?:\w+ ){0,3}$|\b(?:takes?|tak(?:e|ing)|tarda\w*|dura) (?:\w+ ){0,3}$"
    r"|\b(?:thats (?:it|all)|that is (?:it|all)|all(?: i need(?:ed)?)?|be it|it for me|"
    r"help(?:ing)?(?: me)?|assistance|okay|im ok|thats everything|didnt|lost|have an?|"
    r"enjoy(?: your| the)?|que tengan?|que pasen?) (?:\w+ ){0,3}$"
    r"|\b(?:that is all|thatll be all|that will be all|that would be all|all i (?:need|needed)|"
    r"will be all|be all|is all|your help|helping me|your time|(?:will|would|ll) be it|that is it|"
    r"nothing else|(?:i am|im) ok(?:ay)?|all set|enough)\b (?:for |from |with |you |me |i need )*$"
    r"|\b(?:enjoy|feliz|tengan?|pasen?) (?:a |an |un |una |your |the |rest of (?:your |the )?|of )*(?:\w+ )?$"
    r"|\b(?:(?:do|are|you|u|guys|shop|yall) (?:\w+ )?(?:open|close|closed)|abren|cierran|abierto|"
    r"abiertos) (?:\w+ ){0,4}$|\bmeeting (?:at|until|till|from) $"
)
_WANTS_BACK = re.compile(r"\b(?:need|want|have|get|like)\b[^,.]{0,16}$")
_GET_VISIT = re.compile(
    r"\b(?:get|have) (?:it|her|him|the car|my car|my \w+|the \w+) (?:in|there|over|to you|"
    r"serviced|looked|checked|down)\b"
)
_NO_VISIT_AFTER = re.compile(
    r"^\W*(?:is my|is when my|es mi|is the (?:trip|wedding|flight)|ago\b|was\b|is payday|"
    r"i get paid|me pagan|i leave|we leave|i have (?:a|an|my) (?!chance)|tengo (?:una?|mi) )"
)
_CORRECTED = re.compile(
    r"\b(?:no wait|wait no|i mean|i meant|scratch that|oops|correction|actually|make that|make it|"
    r"oh wait|never mind|nevermind|nvm|digo|perdon|mejor dicho|quise decir|no mejor|mejor|"
    r"me equivoque|corrijo|wait|sorry|whoops|rather|espera|no no)\b"
)
_MOVES = re.compile(
    r"\b(?:make it|move|moving|moved|change|changing|switch|reschedule|rescheduled|swap|push|bump|"
    r"bring|mover|muevan|mueva|cambiar|cambien|cambie|cambio|pasar|pasen|recorrer|reprogramar|"
    r"reagendar|postpone)\b"
)
_OLD_TIME_AFTER = re.compile(
    r"^\W*(?:appointment|appt|booking|slot|one|visit|cita|reservation)\b.*\b(?:to|for|a|al|para|until)\b"
)
_INSTEAD = re.compile(
    r"\b(?:instead of|rather than|in place of|en vez del?|en lugar del?|and not|not)(?: the| on|"
    r" at| my| my| el| la)*\W*$"
)


def moves(plain: str) -> bool:
    """Whether words speak of moving a booking."""
    return bool(_MOVES.search(plain))


def before(text: Text, one: Mention) -> str:
    """The words of the clause before a mention."""
    start = text.symbols[one.start].start
    left = text.plain[max(0, start - 160) : start]
    ends = [
        match.end() for match in _CLAUSE_END.finditer(left) if match.group() not in ("but",) or not _is_any_but(left)
    ]
    return left[ends[-1] :] if ends else left


def _is_any_but(left: str) -> bool:
    return bool(
        re.search(
            r"\b(?:any ?(?:day|time|thing|where)?|anything|nothing) but\b|\bany\b[^.]*\bbut\b|"
            r"\bnext week but\b|\bweek but\b",
            left,
        )
    )


def after(text: Text, one: Mention) -> str:
    """The words of the clause after a mention."""
    end = text.symbols[one.end - 1].end
    right = text.plain[end : end + 90]
    found = _CLAUSE_END.search(right)
    return right[: found.start()] if found else right


def is_no_visit(text: Text, one: Mention, following: Mention | None) -> bool:
    """Whether a time is told for something else than the visit (`call me after 5`, `my trip is on the 20th`)."""
    left = before(text, one)
    left = re.split(r",| and (?=i\b|we\b|can\b|could\b)| y (?=puedo\b|quiero\b)", left)[-1]
    opener = text.plain[text.symbols[one.start].start : text.symbols[one.end - 1].end]
    if _NO_VISIT_BEFORE.search(left) and not _GET_VISIT.search(left):
        return not (opener.startswith(("after work",)))
    if opener.startswith("back") and _WANTS_BACK.search(left):
        return True
    return bool(_NO_VISIT_AFTER.search(after(text, one)))


def is_ruled_out(text: Text, one: Mention, previous: Mention | None) -> bool:
    """Whether the customer rules a time out (`not Monday`, `Tuesday doesn't work`)."""
    left = _NOT_REALLY.sub(" ", before(text, one))
    if previous:
        start = text.symbols[previous.end - 1].end
        left = left[-max(0, text.symbols[one.start].start - start) :] if text.symbols[one.start].start > start else ""
    parts = re.split(r",", left)
    if _NOT_BEFORE.search(parts[-1]):
        return True
    right = _NOT_REALLY.sub(" ", after(text, one))
    return bool(_NOT_AFTER.search(right))


def is_taken_back(text: Text, previous: Mention | None, one: Mention) -> str:
    """`before` where this mention corrects what stands before it, `this` where it is left behind, else empty."""
    left = before(text, one)
    if _INSTEAD.search(left) and re.search(r"instead|rather|place of|vez|lugar", left[-30:]):
        return "this"
    if previous is None:
        return "this" if _is_old_time(text, one) else ""
    between = text.plain[text.symbols[previous.end - 1].end : text.symbols[one.start].start]
    if len(between) < 45 and _CORRECTED.search(between) and not re.search(r"\bno me\b|\bdoesnt|cant|\bworks", between):
        return "before"
    is_same_kind = isinstance(previous.value, Days) == isinstance(one.value, Days)
    head = text.plain[: text.symbols[previous.start].start]
    if (
        _MOVES.search(head)
        and is_same_kind
        and re.search(
            r"\b(?:to|for|until|a|al|para|hasta)\s*(?:the|el|la|las|\w+ing)?\s*$", between + " " + _opening(text, one)
        )
    ):
        return "before"
    return ""


def _opening(text: Text, one: Mention) -> str:
    return text.word(one.start) if text.cat(one.start) in ("at", "to", "until") else ""


def _is_old_time(text: Text, one: Mention) -> bool:
    """`move my Tuesday appointment to ...`: the time of the booking that stands."""
    head = text.plain[: text.symbols[one.start].start]
    tail = text.plain[text.symbols[one.end - 1].end :]
    return bool(_MOVES.search(head) and _OLD_TIME_AFTER.search(tail))
