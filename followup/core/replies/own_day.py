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
_ENDS = rf"(?:{_LET_OUT}|{_UNTIL}) (?P<hour>{_NUMBER})\b(?! (?:people|kids|of|days|weeks|miles))(?P<day>{_DAY})"
_AFTER_THAT = (
    r"[ ,.;]*(?:(?:so|and|but|then|or|i|we|can|could|would|will|be|is|come|bring|it|free|open|available|good|best|"
    r"maybe|"
    r"like|im|in|by|swing|any ?time|anything|sometime|whenever|any hour|works?) ){0,7}(?:after|past) ?(?:that|then|it)?"
    r"(?=\W*$|\W*[.,;!?]| (?:on|is|would|works?|will|please|thanks|sounds|that|if|should)\b)"
)
_FREE_AFTER = OnFirstUse(rf"\b{_ENDS}{_AFTER_THAT}")
_ONCE_OUT = OnFirstUse(rf"\b(?:any ?time |some ?time )?(?:after|once|when|as soon as) {_ENDS}")
_BEGINS = (
    rf"(?:(?:i |we )(?:start|begin|have to be at)(?: (?:my |the )?{_TASK})?"
    rf"|(?:my |our |the )?(?:\w+ )?{_TASK} (?:starts?|begins?))(?: (?:at|about|around))* {_NUMBER}\b"
)
_OWN_HOUR = OnFirstUse(
    rf"\b(?:{_LET_OUT} {_NUMBER}\b|{_BEGINS})(?! (?:people|kids|of|days|weeks|miles|hours?|minutes?))"
)
_HOUR = OnFirstUse(r"\b(?:\d|noon|morning|afternoon|one|two|three|four|five|six|seven|eight|nine|ten|eleven)")
_MAY_HOLD = re.compile(rf"\b(?:{_TASK}|off|out|busy|tied|finish|done|teaching)\b")


def without_own_hours(plain: str) -> str:
    """The plain text with `after 4` for `I get off at 4, any time after`, and without such hours beside another."""
    if not _MAY_HOLD.search(plain):
        return plain
    plain = _FREE_AFTER.pattern.sub(_after, plain)
    plain = _ONCE_OUT.pattern.sub(_after, plain)
    left = _OWN_HOUR.pattern.sub(" ", plain)
    return left if left != plain and _HOUR.pattern.search(left) else plain


def _after(match: re.Match[str]) -> str:
    hour = "12:00" if match["hour"] == "noon" else match["hour"]
    return f"after {hour}{match['day']}"
