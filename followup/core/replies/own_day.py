"""The customer's own day told with hours: when work or school lets them out, which is no visit time by itself.

`I get off at 4 so any time after` says after 4; beside another hour (`work ends at 3, could I come at 4`) it says
nothing.
"""

from __future__ import annotations

import re

from followup.core.replies.on_first_use import OnFirstUse

_NUMBER = r"(?:\d{1,2}(?::?[0-5]\d)?(?: ?[ap]m)?|noon|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)"
_DAY = (
    r"(?: (?:on |this |next )*(?:mondays?|tuesdays?|tues?|wednesdays?|weds?|thursdays?|thurs?|fridays?|fri|mon|"
    r"saturdays?|sat|today|tomorrow)\b)?"
)
_TASK = (
    r"(?:work|shift|school|class(?:es)?|meeting|practice|church|daycare|preschool|game|lesson|training|lunch|recital|"
    r"job|surgery|therapy|dialysis)"
)
_LET_OUT = (
    rf"(?:(?:i |we |im |i am |we are |he |she )(?:\w+ )?(?:(?:get|got) (?:off|out|done)|clock out|knock off|"
    rf"finish(?: up)?"
    rf"|off|out|done|through)"
    rf"(?: (?:of |with |from |at )?(?:my |the )?{_TASK})?"
    rf"|(?:done|off|out|finished|through) (?:of |with |from )?(?:my |the )?{_TASK}"
    rf"|(?:my |our |the |her |his |their )?(?:\w+ )?{_TASK} (?:ends?|lets? out|gets? out|is (?:out|over|done|up)|"
    rf"finish(?:es)?"
    rf"|wraps up|runs (?:til+|until|to)))(?: (?:at|about|around|by))*"
)
_UNTIL = (
    rf"(?:(?:in )?(?:an? |my |the )?{_TASK}|work|working|busy|tied up|teaching|class)(?: (?:goes|lasts|runs|is))? "
    r"(?:til+|until|to)"
)
_EITHER_DAY = r"(?: (?:on )?(?:both|either|each|those|all) (?:of (?:those|them) )?days?)?"
_ENDS = (
    rf"(?:{_LET_OUT}|{_UNTIL}) (?P<hour>{_NUMBER})\b(?! (?:people|kids|of|days|weeks|"
    rf"miles))(?P<day>{_DAY}){_EITHER_DAY}"
)
_AFTER_THAT = (
    r"[ ,.;]*(?:(?:so|and|but|then|or|i|we|can|could|would|will|be|is|come|bring|it|free|open|available|good|best|"
    r"maybe|"
    r"like|im|in|by|swing|any ?time|anything|sometime|whenever|any hour|works?) ){0,7}(?:after|past) ?(?:that|then|it)?"
    r"(?=\W*$|\W*[.,;!?]| (?:on|is|would|works?|will|please|thanks|sounds|that|if|should)\b)"
)
_FREE_AFTER = OnFirstUse(rf"\b{_ENDS}{_AFTER_THAT}")
_ONCE_OUT = OnFirstUse(rf"\b(?:any ?time |some ?time )?(?:after|once|when|as soon as) {_ENDS}")
_THEN_FREE = OnFirstUse(
    rf"(?:(?!(?:so|but|and|can|could|then|if)\b)\w+ ){{0,6}}\b(?:til+|until|to|hasta(?: las?)?) (?P<hour>{_NUMBER})\b"
    rf"(?P<day>{_DAY})(?: (?:este|el|on) (?P<dia>lunes|martes|miercoles|jueves|viernes|sabado))?"
    r"[ ,.]*(?:and |but |so |y )?(?:then|after that|de ahi|despues|luego|ya)[ ,]*(?:(?:im|i am|we are|ill be|i will be|"
    r"estoy|quedo|ya|totally|all|wide|en adelante) )*(?:free|open|available|good|libre|disponible)\b(?: all day)?"
)
"""`busy till 1, then I'm free Thursday`"""
_GOES = (
    r"(?:drop\w*|takes?|took|gets?|got|pick\w*|drives?|puts?|walks?|sees?|bring (?!it|the car|my car|her in)|dej\w+|"
    r"llev\w+|recoj\w+|"
    r"recog\w+|entreg\w+|sub\w+)"
)
_ONCE_THERE = OnFirstUse(
    r"\b(?:any ?time |some ?time |whenever )?(?:(?:after|once|when|as soon as) (?:i |we |ive |my \w+ )?|(?:despues "
    r"de(?: que)?|"
    r"en cuanto|cuando|luego de|nomas que|tan pronto) (?:yo )?)"
    rf"{_GOES}(?: (?!(?:so|but|can|could|would|and|then|if|pero|y)\b)[a-z]+){{1,7}}?"
    rf" (?:(?:at|around|about|a las?|como a las?) )?(?P<hour>{_NUMBER})(?P<half> y media)?\b"
    rf"(?! (?:people|kids|of|days|weeks|miles))(?P<day>{_DAY})"
)
"""`after I drop the kids at 8:15`: from then on."""
_BEGINS = (
    rf"(?:(?:i |we )(?:start|begin|have to be at)(?: (?:my |the )?{_TASK})?"
    rf"|(?:my |our |the )?(?:\w+ )?{_TASK} (?:starts?|begins?))(?: (?:at|about|around))* {_NUMBER}\b"
)
_OWN_HOUR = OnFirstUse(
    rf"\b(?:{_LET_OUT} {_NUMBER}\b|{_BEGINS})(?! (?:people|kids|of|days|weeks|miles|hours?|minutes?))"
)
_HOUR = OnFirstUse(r"\b(?:\d|noon|morning|afternoon|one|two|three|four|five|six|seven|eight|nine|ten|eleven)")
_MAY_HOLD = re.compile(rf"\b(?:{_TASK}|off|out|busy|tied|finish|done|teaching)\b")


_THAT_DAY = OnFirstUse(
    r"\b(?:no )?(?:\w+ ){1,5}hasta (?:el|este) (lunes|martes|miercoles|jueves|viernes|sabado) ?[,.]? ?(?:y )?ese "
    r"(?:mismo )?dia\b"
)
"""`no descanso hasta el viernes, ese dia a las 3`"""
_MAY_THEN = re.compile(r"\b(?:free|open|available|good|libre|disponible)\b")
_MAY_GO = re.compile(r"\b(?:after|once|when|as soon as|despues|cuanto|cuando|luego|nomas|pronto)\b[^.?!]* \d")


def without_own_hours(plain: str) -> str:
    """The plain text with `after 4` for `I get off at 4, any time after`, and without such hours beside another."""
    if "ese" in plain:
        plain = _THAT_DAY.pattern.sub(r"el \1", plain)
    if _MAY_THEN.search(plain):
        plain = _THEN_FREE.pattern.sub(_after, plain)
    if _MAY_GO.search(plain):
        plain = _ONCE_THERE.pattern.sub(_after, plain)
    if not _MAY_HOLD.search(plain):
        return plain
    plain = _FREE_AFTER.pattern.sub(_after, plain)
    plain = _ONCE_OUT.pattern.sub(_after, plain)
    left = _OWN_HOUR.pattern.sub(" ", plain)
    return left if left != plain and _HOUR.pattern.search(left) else plain


def _after(match: re.Match[str]) -> str:
    hour = "12:00" if match["hour"] == "noon" else match["hour"]
    told = match.groupdict()
    day = match["day"] or (f" {told['dia']}" if told.get("dia") else "")
    return f"{_AFTER[bool(told.get('dia') or _IN_SPANISH.search(match.group()))]} {hour}{told.get('half') or ''}{day}"


_AFTER = ("after", "despues de las")
_IN_SPANISH = re.compile(r"\b(?:hasta|las?|de)\b")
