"""Whether a bare number is an hour: what stands around it must say so."""

from __future__ import annotations

import re

from followup.core.replies import hour_spans
from followup.core.replies.judging import moves
from followup.core.replies.mentions import Days, Hours, Mention, PartOfDay, Text
from followup.core.replies.words.entry import word_set

GLUE = {"at", "on", "in", "the", "any", "of", "around", "from", "a", "this", "between", "coming"}
NO_HOUR_AFTER = word_set(
    "people person persons adults adult kids kid child children members women men ladies friends couples",
    "cars car vehicles tires tire wheels brakes miles mile mi km k kms kilometers millas",
    "dollars bucks percent guys times others more years year old month months day days week weeks pads llantas",
    "pounds quid euros bags",
    "carros personas veces cosas things weeks ones options rooms guests tickets nights lbs psi mm dolares % $",
    "mph ago inch inches kilometros thousand grand messages texts calls",
)
_OF_WHOM = word_set("us them you my our the those these nosotros ellos")
_NO_HOUR_BEFORE = word_set("$ # option number opcion numero those these them")
_LOOSE_OPENERS = word_set("for say maybe around about para por near como sobre a from to")
"""Words before a number that alone do not make it an hour."""
_GOES_WITH_HOUR = word_set(
    "works work is would please sounds good if can ok fine be better best suits would will then thanks should",
    "instead me esta si seria porfavor sale funciona queda it perfect great would for sharp y for that perfecto",
    "mejor gracias actually preferably ideally grand swell super",
)


_SHORT_ANSWER = 20
"""Symbols of an answer that can be nothing but hours."""


def is_hour(text: Text, at: int, got: tuple[Hours, int, bool], previous: Mention | None) -> bool:
    """Whether a bare number is an hour: what stands around it must say so."""
    told, end, is_shown = got
    after, before = text.word(end), text.word(at - 1)
    if _is_counted(text, at, end, told.first.is_plain) or _is_stay(text, at, end):
        return False
    if told.first.is_plain:
        return True
    is_date = text.cat(end) == "month" and text.cat(end + 1) not in ("num", "ordinal", "the")
    if is_date or (text.cat(end) == "weekday" and text.cat(end + 1) == "ahead"):
        return False
    if text.setting.language == "en" and text.cat(text.skip(at, "at", "around") - 1) == "a":
        return False
    if _is_address(text, end) or _is_pronoun(text, at, end, told, is_shown):
        return False
    if told.first.minute and is_shown:
        return True
    if text.word(at) == "for" and text.word(end) == "," and _has_hour(text, end + 1):
        return False
    is_after_for = "for" in (text.word(at), text.word(at - 1))
    if is_after_for and previous and isinstance(previous.value, Hours) and previous.end in (at, at - 1):
        return False
    is_open_ended = text.word(at) == "from" and text.word(end - 1) == "on"
    if is_open_ended or _is_own_clause(text, at, end, told) or _is_run_together(text, at, end, told, previous):
        return True
    if text.word(at) in _LOOSE_OPENERS and not _near_time(text, at, end, previous):
        return _is_after_loose_opener(text, at, end)
    if before == "to" and _ends_here(text, end) and moves(_head(text, at)):
        return True
    if before in ("like", "say") and _may_be_told(text) and _ends_here(text, end):
        return True
    if before == "of" and text.setting.language == "en":
        return False
    if _is_asked_about(text, before, end) or _is_told_as_time(text, at, end):
        return True
    if _is_for_so_many(text, at) or _is_for_so_many(text, at - 1):
        return False
    spelled = not any(char.isdigit() for symbol in text.symbols[at:end] for char in symbol.text)
    if before in ("make it", "make that") and told.first.hour >= 1:
        return _may_be_told(text) or previous is not None
    if spelled and told.first.hour == 1 and not is_shown and text.setting.asked != "time":
        return False
    if is_shown or _near_time(text, at, end, previous):
        return True
    if text.setting.asked in ("time", "slot", "day", "confirm") and _stands_alone(text, at, end):
        return text.setting.asked == "time" or not (spelled and told.first.hour < 3)
    return bool(after in _GOES_WITH_HOUR and text.setting.asked in ("time", "slot", "day") and not spelled)


def _is_counted(text: Text, at: int, end: int, is_plain: bool) -> bool:
    """Whether the number counts something: people, miles, days."""
    after = text.word(end)
    is_of_things = after in NO_HOUR_AFTER or (after == "of" and text.word(end + 1) in _OF_WHOM)
    is_pair = text.cat(end - 1) == "num" and text.cat(end - 2) == "num"
    if (is_of_things and (is_pair or not is_plain)) or text.word(at - 1) in _NO_HOUR_BEFORE:
        return True
    return text.cat(end) == "unit" and not is_plain


def _has_hour(text: Text, at: int) -> bool:
    """Whether what stands here is surely an hour."""
    ahead = hour_spans.bounded_hour(text, at)
    return bool(ahead and ahead[0].first.is_plain)


def _is_stay(text: Text, at: int, end: int) -> bool:
    """`a four night stay`: how many nights, no hour of one."""
    is_night = text.word(end - 1) in ("night", "nite") and text.cat(end - 2) == "num"
    return is_night and end - at == 2 and hour_spans.is_of_nights(text, end - 1)


_STREETS = word_set("street st ave avenue road rd drive dr lane ln blvd boulevard court way highway hwy calle avenida")


def _is_address(text: Text, end: int) -> bool:
    """`455 Main St`: the number of a house."""
    return len(text.word(end - 1)) >= 3 and any(
        text.word(n) in _STREETS and text.cat(n - 1) == "word" for n in range(end + 1, end + 4)
    )


def _is_pronoun(text: Text, at: int, end: int, told: Hours, is_shown: bool) -> bool:
    """`make one on Monday`, `the one at 3`, `one of us`: the word, not the hour."""
    if text.word(end - 1) not in ("one", "un", "una", "uno") or told.last is not None:
        return False
    after_one = text.word(end)
    if text.word(end) == "of" or text.word(end - 2) in ("the", "this", "that", "another", "first", "last"):
        return text.word(end - 2) != "las"
    if text.word(end - 1) == "one" and text.cat(end) in ("word", "ahead") and after_one not in _GOES_WITH_HOUR:
        return True
    is_led = text.word(at) in ("at", "@", "by", "after", "before", "until", "till", "around", "about") or text.word(
        end - 2
    ) in ("la", "las")
    if is_led and is_shown:
        return False
    return text.word(end) in _AFTER_PRONOUN or text.setting.asked != "time"


_AFTER_PRONOUN = word_set("of that which with for at on in day time thing more del de for car is was")


_ASKS = word_set("is would does will can could")
_ALL_RIGHT = word_set("ok good fine possible available free open work works be alright suit")


def _is_asked_about(text: Text, before: str, end: int) -> bool:
    """`is 8 ok`, `would 3 work`, `do 11 that day`: a question that only a time of the day can be put to."""
    after, next_after = text.word(end), text.word(end + 1)
    if (
        before in ("be", "but")
        and _ends_here(text, end)
        and _WITH_DAY.search(text.plain[: text.symbols[end - 1].start])
    ):
        return True
    if before == "do" and _CAN_DO.search(text.plain[: text.symbols[end - 1].start]) and _ends_here(text, end):
        return _may_be_told(text)
    if before == "do":
        return (
            after == "instead" or (after == "that" and next_after == "day") or (after == "the" and next_after == "same")
        )
    return (before in _ASKS and after in _ALL_RIGHT) or (after == "it" and next_after == "is" and _may_be_told(text))


_WITH_DAY = re.compile(
    r"(?:day|tomorrow|today|thurs?|tues?|fri|mon|wed|sat|one|time|ones?|works?|good|fine|yes|ok),? (?:works |"
    r"is (?:good|fine) )?"
    r"but (?:can|could|would|may|might) (?:it|we|that) (?:maybe |possibly )?be $|(?:day|tomorrow|today|one),? but $"
)
"""`Thursday but 10`, `the first one but can it be 10`"""
_CAN_DO = re.compile(r"\b(?:can|could) (?:i|we|you)(?: guys| maybe| please)? do $")
_TIME_IS = re.compile(r"\btime (?:is|to be|would be|was|should be|for that is|:) ?$")
_SAID = re.compile(r"\b(?:i (?:said|mean|meant|asked for)|only(?: do| make| come)?) $")


def _is_told_as_time(text: Text, at: int, end: int) -> bool:
    """`my preferred time is 2`, `I said 3`: a number that is called a time, or is said again."""
    if not _ends_here(text, end) and text.word(end) not in _GOES_WITH_HOUR:
        return False
    head = _head(text, at)
    return bool(_TIME_IS.search(head)) or (text.setting.asked in ("time", "slot", "day") and bool(_SAID.search(head)))


def _is_after_loose_opener(text: Text, at: int, end: int) -> bool:
    """Whether a bare number after `for`, `say`, `around` is an hour."""
    if text.word(at) == "from" and text.word(at - 1) in ("free", "available", "around", "open", "home"):
        return _ends_here(text, end)
    if text.word(at) in ("from", "to") or (text.word(at) == "a" and text.word(at + 1) not in ("las", "la")):
        return False
    if text.word(at) == "for" and not _may_be_told(text) and not _BOOKS.search(_head(text, at)):
        return False
    if text.word(at) == "for" and text.has_plain_hour:
        return False
    if _is_for_so_many(text, at):
        return False
    return _ends_here(text, end) or text.word(end) in _GOES_WITH_HOUR


_GOES_ON = word_set("and but because so as if i ill works work if since")
_LEAST_HOUR_OF_OFFERS = 4
"""A smaller number among offers is as well a place in the list."""


def _is_own_clause(text: Text, at: int, end: int, told: Hours) -> bool:
    """`8 and I need a loaner`, `the one before my shift, 8`: an hour as the answer, whatever is said beside it."""
    asked = text.setting.asked
    if asked != "time" and not (asked == "slot" and (told.first.minute or told.first.hour >= _LEAST_HOUR_OF_OFFERS)):
        return False
    is_opened = at == 0 or (text.cat(at - 1) == "mark" and text.word(at - 1) not in ("$", "#", "/", "(", "%"))
    ends = text.cat(end) in ("", "mark", "and", "except") and text.word(end) not in ("/", "%", "$", ")")
    if at == 0:
        return ends or text.word(end) in _GOES_ON
    return is_opened and text.cat(end) == ""


_HOUR_AND_MINUTES = 3
"""Digits of the shortest hour that is written with its minutes: `730`."""


def _is_run_together(text: Text, at: int, end: int, told: Hours, previous: Mention | None) -> bool:
    """`Friday but early, 730`, `so like 230`: hour and minutes in one number, as a clause of its own behind a day."""
    if previous is None or end - at != 1 or not text.word(at).isdigit() or len(text.word(at)) < _HOUR_AND_MINUTES:
        return False
    is_led = text.word(at - 1) in (",", ".", ";", "like", "say", "como")
    return is_led and text.cat(end) in ("", "mark")


def _head(text: Text, at: int) -> str:
    """The words before this place, as far back as they can bear on it."""
    start = text.symbols[at].start
    return text.plain[max(0, start - 160) : start]


_BOOKS = re.compile(
    r"\b(?:book|put|schedule|set|pencil|sign|fit|squeeze|get|see|expect|make|reserve|appointment|slot|spot|opening)\b"
    r"(?: \w+){0,4} $"
)
_SEATS = re.compile(r"\b(?:table|room|rooms|seats?|tickets?|bed|party|tires?|price|quote)(?: \w+)? $")
_SEATS_UNTIL = re.compile(r"\b(?:table|room|rooms|seats|tickets|beds) (?:from|between)\b[^.,;]{0,40} $")


def _is_for_so_many(text: Text, at: int) -> bool:
    """`a table for 4`, `a room from Monday to Friday for 2`: how many people, and no hour."""
    head = _head(text, at) if text.word(at) == "for" else ""
    return bool(_SEATS.search(head) or _SEATS_UNTIL.search(head))


def _may_be_told(text: Text) -> bool:
    """Whether an hour alone was to be expected: one was asked for, or a day or offers are under discussion."""
    return text.setting.asked != "visit" or text.setting.has_offer


def _near_time(text: Text, at: int, end: int, previous: Mention | None) -> bool:
    """Whether another time stands right before or after this number."""
    if previous and isinstance(previous.value, Days | PartOfDay | Hours):
        between = [text.symbols[n] for n in range(previous.end, at)]
        if isinstance(previous.value, Hours) and any(one.category == "correction" for one in between):
            return len([one for one in between if one.category != "mark"]) <= 4
        if text.cat(previous.end - 1) == "weekday" and [one.text for one in between] == ["so"]:
            return text.cat(end) in ("", "mark") or text.word(end) in _SUITS
        if all(one.category in (*GLUE, "or", "and") or one.text == "," for one in between):
            is_list = any(one.category in ("or", "and") or one.text == "," for one in between)
            if text.cat(previous.end - 1) in ("weekday", "relday") and [one.text for one in between] == [","]:
                return text.cat(end) in ("", "mark") or text.word(end) in _SUITS
            if isinstance(previous.value, Hours | PartOfDay) or not is_list:
                return True
    part_at = end + 1 if text.word(end) == "," else end
    if text.cat(text.skip(part_at, "this", "at", "in", "the")) == "part":
        return True
    after = text.skip(end, "on", "the", "this", "or", "next", "coming")
    if text.cat(end) == "or":
        ahead = hour_spans.bounded_hour(text, end + 1)
        return bool(
            ahead
            and (
                ahead[0].first.is_plain
                or _ends_here(text, ahead[1])
                or text.word(ahead[1]) in _GOES_WITH_HOUR
                or text.cat(text.skip(ahead[1], "on", "the")) in ("weekday", "relday")
            )
        )
    is_on_date = text.cat(end) == "on" and text.cat(after) in ("month", "ordinal") and text.cat(after + 1) != "word"
    return (text.cat(after) in ("weekday", "relday", "date", "holiday") or is_on_date) and text.word(end) != "."


_SUITS = word_set("works would suits")


def _ends_here(text: Text, at: int) -> bool:
    return text.cat(at) in ("", "mark", "or", "and", "except", "instead_of")


_POLITE = word_set(
    "please thanks ok yes sure maybe works gracias si por favor um uh like is good fine then great",
    "yeah perfect umm hmm so probably preferably ideally think i lets do can still just",
)
"""Words that may stand beside a number that answers for an hour."""


def _stands_alone(text: Text, at: int, end: int) -> bool:
    """Whether nothing but marks and polite words stands beside the number."""
    if _is_first_clause(text, at, end):
        return True
    if len(text.symbols) > _SHORT_ANSWER:
        return False
    is_corrected = any(one.category == "correction" for one in text.symbols)
    polite = _POLITE | {"no"} if is_corrected else _POLITE
    others = [one for n, one in enumerate(text.symbols) if not at <= n < end]
    return all(
        one.category in ("mark", "at", "or", "num", "the", "and", "correction") or one.text in polite for one in others
    )


_PLACES_IN_A_LIST = 4


def _is_first_clause(text: Text, at: int, end: int) -> bool:
    """Whether the number is all that stands before the first mark (`ten, I need a ride`), and no place in a list."""
    is_place = text.setting.asked == "slot" and text.value(at) <= _PLACES_IN_A_LIST
    is_asked = text.setting.asked in ("time", "slot")
    return is_asked and not is_place and at == 0 and text.cat(end) == "mark" and text.word(end) in (",", ".", ";")
