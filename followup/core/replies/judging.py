"""Whether a mentioned time is ruled out or taken back by the text itself; what is no visit is in `other_times.py`."""

from __future__ import annotations

import re

from followup.core.replies.mentions import Days, Hours, Mention, Text
from followup.core.replies.other_times import is_for_something_else, says_it_suits

_CLAUSE_END = re.compile(
    r"[.!?;\n]|\b(?:but|pero|although|aunque|so|how about|what about|que tal|or maybe|instead|because|porque)\b"
)
_NOT_BEFORE = re.compile(
    r"\b(?:cant|not|wont|dont|doesnt|isnt|except|never|unable|anything but|any day but|"
    r"any time but|busy|(?:im|i am|we are|were|fully|all|already) booked(?! (?:for|at|under|in|on|with)\b)|"
    r"booked (?:up|solid|out)|tied up|unavailable"
    r"|no puedo|menos|excepto|tampoco|salvo|ocupad[oa]|out of town|(?:im|am|are|is|be|going|were) "
    r"away|im off (?=to\b|from\b|at\b|until\b|till\b|for\b)|im out|"
    r"nor|neither|"
    r"any ?(?:day|time|thing)? ?(?:but|except|other than|besides)|ni)\b"
    r"|\b(?:scratch|nix|forget about|rule out|anything except) $"
    r"|\bno (?:more |to |on |for |the |in |early |late |can do |way )*$"
)
_NO_BEFORE = re.compile(r"\bno\b")
"""In Spanish a `no` rules out what follows at any distance; in English it is an answer, unless it stands beside it."""
_NOT_REALLY = re.compile(
    r"\b(?:no (?:tienen?|hay|habra|tendran?|tendria|tendrian|podrian?|pueden) (?=[^.!]*\?)|(?:o )?si no\b|"
    r"no (?:tienen?|hay|habra|tendran?) "
    r"(?:\w+ )?(?:para|lugar|cita|espacio|chance)|no "
    r"(?:worries|worry|problem|prob|problema|issues?|doubt|rush|hay problema|pasa nada)|"
    r"why not|por ?que no|si no(?! (?:puedo|me|se|hay)\b)|not only|dont mind|dont care|dont forget|cant wait|"
    r"cant (?:you|we|i)|couldnt|no thanks|if not|if its not|why dont|not (?:a )?(?:problem|bad)|"
    r"(?:why|reason)\b[^.?!,]{0,24}\b(?:not (?:being )?able|cant|unable|not)\b|"
    r"how busy|if (?:\w+ ){1,2}(?:too |so |that )?busy|(?:are|r) (?:you|u|yall|they|things) (?:\w+ )?busy|"
    r"(?:doesnt|does not|dont|wont|makes? no) (?:really |even |much )?(?:matter|care|mind|make (?:a|any) difference|"
    r"difference)|"
    r"whether or not|no se si|not sure if|dont know if|not too|no mas|nomas|cant complain|no (?=i|"
    r"we|que|mejor|wait|esper[ae]|perdon|sorry)|wait no|no no|not today but|"
    r"dont (?:want to )?(?:cancel|change|move|worry|text|call)|"
    r"(?:cant|wont|couldnt|not|unable to|no way (?:i|we) can) (?:be able to |able to )?(?:pick|collect|fetch|grab|"
    r"retrieve|"
    r"get (?:it|her|him|back)|come back|do (?:any|it any) (?:later|earlier|sooner)|be (?:any )?(?:later|earlier)))\b"
)
_POLITE_NO = re.compile(
    r"\b(?:y )?no (?:me |se |le |les |nos )?(?:tiene[ns]?|tend\w+|hay|habr\w+|puede[ns]?|podr\w+|podemos|seria|da[ns]?|"
    r"abr\w+|trabaja[ns]?|sirve)\b"
)
"""The no of a Spanish question that asks politely (`no tendran algo el lunes?`) rules nothing out."""
_POLITE_AT_ALL = re.compile(
    r"^\W*(?:(?:y|hola|oiga|si|ok|disculpe|buenas?|tardes|dias|gracias|pero) ?,? ?)*no (?:me |se |le |les |nos "
    r")?(?:tendran?|"
    r"tendras|habra|habria|podran?|podrian|podras|tendrian? (?=algo|lugar|espacio|cita|otr|mas|un\b|disp|chance))"
)
"""Forms in which one only asks, also where the question mark is left out (`no tendran algo el lunes`)."""
_NOT_AFTER = re.compile(
    r"^(?:\W*(?:at|is|are|im|am|was|the|all|day|i|that|it|just|really|unfortunately|sorry|me|"
    r"definitely|probably|se|le|ese|dia|esta|for me|morning|afternoon|ones?|evening|and \w+day|"
    r"or \w+day|slot|time|works?)\b){0,4}\W*"
    r"(?:doesnt|does not|dont|wont|isnt|is not|is no|no good|not good|is bad|no me|not work|"
    r"not gonna|not going|im busy|i cant|cant|am busy|is out|isnt good|not possible|is booked"
    r"|no puedo|no voy a poder|no podre|no alcanzo|no me|no se puede|imposible|impossible|is too|im working|i work\b|"
    r"not available|"
    r"no(?= ?(?:,|$| y | and ))|"
    r"no go|aint|wouldnt|would not|are no|are out|are bad|estoy ocupad|trabajo|"
    r"tampoco(?= ?(?:,|[.]|$| y | puedo| me ))|ni (?:de|en|por) (?:chiste|broma|suenos?|pedo|casualidad|error)|ni a "
    r"palos|ni loc[oa]|ni hablar|ni pensarlo|"
    r"nel\b|"
    r"out(?= ?[.,;!?]|\Z| for (?:me|us)\b)|no use|useless|out of the question|is tough|is hard|is rough|wont do|busy|"
    r"no work|a no)\b"
)
_CORRECTED = re.compile(
    r"\b(?:no wait|wait no|i mean|i meant|scratch that|oops|correction|actually|make that|make it|"
    r"oh wait|jk|just kidding|kidding|lol no|haha no|never mind|nevermind|nvm|digo|perdon|mejor dicho|quise decir|no "
    r"mejor|mejor|"
    r"me equivoque|corrijo|wait|sorry|whoops|rather|espera|no no|mas bien)\b"
    r"|(?:\.\.|,) ?bueno,? $|(?:\.\.|,) ?bueno,? (?=no\b|mejor|a las?\b|el\b)"
)
_MEANT = re.compile(
    r"\b(?:i mean|i meant|scratch that|oops|correction|digo|quise decir|i mean to say|wait no|no wait)\b"
)
"""Words after which what was said before, also a `not`, counts for nothing."""
_MOVES = re.compile(
    r"\b(?:make it|move|moving|moved|delay|delaying|delayed|change|changing|changed|switch|reschedule|"
    r"rescheduled|swap|push|bump|slide|scoot|nudge|"
    r"bring|mover|muevan|mueva|cambiar|cambien|cambie|cambio|pasar|pasen|recorrer|reprogramar|"
    r"reagendar|postpone)\b"
)
_NEEDS_TO_BE = re.compile(
    r"^ ?(?:appointment |appt |booking |slot |one |visit |drop ?off )?(?:now |really |just )?(?:needs?|has|have|got|"
    r"gotta|ought|must|should|"
    r"wants?|will have|may need|might need|could) (?:to )?(?:be|become|turn into|go to|change to|move to|switch "
    r"to)(?: now)? "
    r"(?:to |at |an? |the |more like |my )*$"
)
"""`my 9 needs to be a 2`"""
_CHANGED_TO = re.compile(
    r"\b(?:chang|mov|delay|switch|push|bump|swap|reschedul)\w* (?:it |that |this |them )?(?:back |up |over )?"
    r"(?:to|for|until) $"
)
_OLD_TIME_AFTER = re.compile(
    r"^\W*(?:appointment|appt|booking|slot|one|visit|cita|reservation)\b.*\b(?:to|for|a|al|para|until)\b"
)
_CALLS_OFF = re.compile(r"\b(?:cancel|delete|remove|scrap|drop) (?:my |the |that |this )*$")
_GIVEN_UP_AFTER = re.compile(
    r"^\W*(?:appointment|booking|slot|one|visit|reservation|meeting)\b[^.?!]*\b(?:add|book|make|schedule|put|set)\b"
)
_IN_PLACE_OF = re.compile(
    r"\b(?:instead of|rather than|better than|in place of|en vez del?|en lugar del?|mejor (?:que|q))(?: the| on| at| "
    r"my| el| la)*\W*$"
)


def moves(plain: str) -> bool:
    """Whether words speak of moving a booking."""
    return bool(_MOVES.search(plain))


def moves_before(text: Text, at: int) -> bool:
    """Whether the sentence before this place speaks of moving a booking; `make it` may as well tell how long."""
    start = text.symbols[at].start if at < len(text.symbols) else len(text.plain)
    head = text.plain[max(0, start - 160) : start]
    return moves(re.split(r"[.!?]", head)[-1].replace("make it", ""))


_COMES = re.compile(
    r"\b(?:come|coming|bring|drop|swing|stop by|head(?:ing)?|be there|get in|go back|meet|see me|take me|fit me in|"
    r"free|available|squeeze me in|lets go|ir|voy|llevar\w*|pasar)\b(?: \w+){0,4} $"
)


def comes_now(text: Text, at: int) -> bool:
    """Whether `now` at this place is when the customer would come, and not why not."""
    left = text.plain[: text.symbols[at].start]
    clause = _CLAUSE_END.split(left)[-1]
    return bool(_COMES.search(clause)) and not _NOT_BEFORE.search(clause)


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


def is_no_visit(text: Text, one: Mention) -> bool:
    """Whether a time is told for something else than the visit (`call me after 5`, `my trip is on the 20th`)."""
    left = re.split(
        r",| and (?=i\b|we\b|can\b|could\b)| y (?=puedo\b|quiero\b|quedamos\b|voy\b|paso\b|l[oa] llevo\b)|"
        r"\b(?=(?:can|could) (?:i|we|you|u)\b|how about\b|what about\b|lets\b|se puede\b|podemos\b|puede ser\b|mejor "
        r"(?:el|la|en|a)\b)",
        before(text, one),
    )[-1]
    return is_for_something_else(text, one, left, after(text, one))


def suits(text: Text, one: Mention) -> bool:
    """Whether the words behind a time say that it suits."""
    return says_it_suits(after(text, one))


def is_ruled_out(text: Text, one: Mention, previous: Mention | None) -> bool:
    """Whether the customer rules a time out (`not Monday`, `Tuesday doesn't work`)."""
    left = _NOT_REALLY.sub(" ", before(text, one))
    if previous and previous.start != one.start:
        start = text.symbols[previous.end - 1].end
        left = left[-max(0, text.symbols[one.start].start - start) :] if text.symbols[one.start].start > start else ""
    corrected = [match.end() for match in _MEANT.finditer(left)]
    left = left[corrected[-1] :] if corrected else left
    if text.word(one.start) in ("for", "at", "@"):
        left = left.removesuffix("booked ")
    if text.setting.language == "es":
        left = _POLITE_NO.sub(" ", left) if _is_asked(text, one) else _POLITE_AT_ALL.sub(" ", left)
    parts = re.split(r",", left)
    if _NOT_BEFORE.search(parts[-1]) or (text.setting.language == "es" and _NO_BEFORE.search(parts[-1])):
        return True
    right = _NOT_REALLY.sub(" ", after(text, one))
    if _NOR_THAT.match(right) and _REFUSED.search(text.plain[: text.symbols[one.start].start]):
        return True
    if previous and isinstance(previous.value, Hours) and previous.value.kind != "at" and right.startswith(","):
        return False  # a reason for the bound: `not before 11 on Monday, I work nights`
    return bool(_NOT_AFTER.search(right))


_NOR_THAT = re.compile(r"^ ?(?:either|neither) ?(?:[,.;!]|$)")
_REFUSED = re.compile(r"\b(?:no|not|cant|cannot|wont|doesnt|dont|isnt|arent|is out|are out|busy|nope)\b")
"""`Tuesday's no good, Wednesday either`"""


def _is_asked(text: Text, one: Mention) -> bool:
    """Whether the sentence that holds a mention ends in a question mark."""
    return bool(re.match(r"[^.!;?]*\?", text.plain[text.symbols[one.end - 1].end :]))


def is_taken_back(text: Text, previous: Mention | None, one: Mention) -> str:
    """`before` where this mention corrects what stands before it, `this` where it is left behind, else empty.

    `other kind` where it is the hour to which a day before it is moved, or the day of an hour.
    """
    start = text.symbols[one.start].start
    if _IN_PLACE_OF.search(text.plain[max(0, start - 40) : start]):
        return "this"
    if previous is None:
        return "this" if _is_old_time(text, one) else ""
    between = text.plain[text.symbols[previous.end - 1].end : text.symbols[one.start].start]
    if isinstance(previous.value, Days) and isinstance(one.value, Days) and _NO_BETWEEN.match(between):
        return "before"
    if _NOT_THE_OTHER.match(between) and _I_MEANT.search(text.plain[: text.symbols[previous.start].start]):
        return "this"
    if (
        len(between) < 45
        and _CORRECTED.search(between)
        and not re.search(r"\bno me\b|\bno voy a poder\b|\bno podre\b|\bdoesnt|cant|\bworks", between)
    ):
        return "before"
    is_same_kind = isinstance(previous.value, Days) == isinstance(one.value, Days)
    head = text.plain[: text.symbols[previous.start].start]
    if is_same_kind and (_CHANGED_TO.search(between) or _NEEDS_TO_BE.match(between)):
        return "before"
    if isinstance(one.value, Days) and between.rstrip().endswith(" from") and _MOVES.search(head):
        return "this"
    if _MOVES.search(head) and _LEADS_TO.search(between + " " + _opening(text, one)):
        return "before" if is_same_kind else "other kind"
    return ""


_NO_BETWEEN = re.compile(
    r"^ ?[.,!?;][ .,!?;]*(?:(?:bueno|ay|uy|oh|mejor|espera|digo|ah|pero|o|que|shoot|crap|"
    r"dang|darn|damn|ugh|oops|whoops|rats|doh) ?,? ?)?no\W+$"
)
"""`tuesday. no, wednesday`"""
_NOT_THE_OTHER = re.compile(r"^\W*(?:and )?(?:not|no)(?: on| the| at| el| la)*\W*$")
_I_MEANT = re.compile(r"\b(?:i (?:mean|meant)|quise decir|digo)\b[^.?!]{0,12}$")
"""`I meant Friday not Thursday` corrects a slip, and rules nothing out."""
_LEADS_TO = re.compile(r"\b(?:to|for|until|a|al|para|hasta)\s*(?:the|el|la|las|\w+ing)?\s*$")


def _opening(text: Text, one: Mention) -> str:
    return text.word(one.start) if text.cat(one.start) in ("at", "to", "until") else ""


def _is_old_time(text: Text, one: Mention) -> bool:
    """`move my Tuesday appointment to ...`: the time of the booking that stands."""
    head = text.plain[: text.symbols[one.start].start]
    tail = text.plain[text.symbols[one.end - 1].end :]
    if _CALLS_OFF.search(head) and _GIVEN_UP_AFTER.search(tail):
        return True
    return bool(_MOVES.search(head) and _OLD_TIME_AFTER.search(tail))
