"""Reading the times of a text: mentions are found, judged (wanted, ruled out, taken back), and joined."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace

from followup.core.replies import hour_spans, periods
from followup.core.replies.alternatives import folded, prefers
from followup.core.replies.bare_hours import GLUE, NO_HOUR_AFTER, is_hour
from followup.core.replies.clause_roles import with_own_day, without_asides
from followup.core.replies.joining import join_mentions, spread_times, stands_between
from followup.core.replies.judging import is_no_visit, is_taken_back, suits
from followup.core.replies.mentions import Days, Hours, Mention, PartOfDay, Setting, Text
from followup.core.replies.symbols import read_symbols
from followup.core.replies.windows import Choice
from followup.core.replies.words.entry import word_set
from followup.core.replies.written_dates import days_of_one_month

_WORDS_THAT_OPEN = frozenset({"otra", "otro", "other", "rest"})
"""Words outside the lists with which a time can begin."""


@dataclass(frozen=True)
class Read:
    """The times that a text holds."""

    choices: tuple[Choice, ...] = ()
    later: tuple[Days, ...] = ()
    """When to ask again, as told."""
    is_any: bool = False
    other: tuple[Mention, ...] = ()
    """Mentions that are no visit times."""
    has_bare_hour: bool = False
    asides: int = 0
    """How many times were set aside as the customer's own day, or as left behind."""


def read_times(plain: str, setting: Setting) -> tuple[Read, Text]:
    """All times of a plain text."""
    text = Text(read_symbols(plain, setting.language), setting, plain)
    found = _scan(text)
    kept: list[Mention] = []
    other: list[Mention] = []
    is_any_then = bool(_ANY_THEN.search(plain))
    for number, one in enumerate(found):
        goes_on = number > 0 and _is_one_phrase(text, found[number - 1], one)
        is_joined = goes_on or (number > 0 and _is_joined_day(text, found[number - 1], one))
        follows_other = is_joined and bool(other) and found[number - 1] is other[-1]
        is_day_past = number + 1 < len(found) and _is_past(found[number + 1])
        is_of_past = _is_past(one) or (is_day_past and _is_one_phrase(text, one, found[number + 1]))
        is_visit = number > 0 and found[number - 1] in kept[-1:] and _completes(text, found[number - 1], one)
        is_visit = is_visit or (isinstance(one.value, Days) and bool(one.value.week) and is_any_then)
        is_other = follows_other or is_of_past or (not is_visit and is_no_visit(text, one))
        (other if is_other else kept).append(one)
    kept, asides = without_asides(text, with_own_day(text, kept, other))
    kept = _without_habits(text, _without_taken_back(text, kept))
    later = tuple(one.value for one in kept if isinstance(one.value, Days) and one.value.is_later)
    kept = _without_counts(text, _without_kinds(text, kept))
    visit = [one for one in kept if not (isinstance(one.value, Days) and one.value.is_later)]
    joined = folded(plain, spread_times(join_mentions(text, visit)))
    choices = tuple(_as_preferred(plain, _at_the_same_hour(plain, joined)))
    if _EVERY_DAY.search(plain):
        choices = tuple(replace(choice, is_any_day=True) for choice in choices)
    bare = any(isinstance(one.value, Hours) and not one.value.first.is_plain for one in visit)
    return Read(choices, later, _is_any(plain), tuple(other), bare, asides), text


_ANY_THEN = re.compile(
    r"\bany ?(?:day|time)(?: (?:works|is (?:good|fine)))? (?:then|that week|of that week|during that week)\b|"
    r"\bcualquier dia (?:de |en )?esa(?: misma)? semana\b|\bcualquier dia entonces\b"
)
"""`we are off the week of the 16th, so any day then`: the week is when the customer can."""
_SAME_HOUR = re.compile(r"\bsame (?:time|hour)\b|\bmisma hora\b")


def _at_the_same_hour(plain: str, choices: list[Choice]) -> list[Choice]:
    """`Thursday at 11 or Friday same time`: the hour told before is meant for the day after it too."""
    if len(choices) < 2 or not _SAME_HOUR.search(plain):
        return choices
    told = next((one.time for one in choices if one.time is not None and not one.is_negated), None)
    return [replace(one, time=told) if one.time is None and one.day and not one.is_negated else one for one in choices]


def _without_counts(text: Text, found: list[Mention]) -> list[Mention]:
    """The mentions without the 4 of `for 4 at 1:15 pm`, which counts something where an hour is surely told."""
    if not any(isinstance(one.value, Hours) and one.value.first.is_plain for one in found):
        return found
    return [one for one in found if not _is_count(text, one)]


def _is_count(text: Text, one: Mention) -> bool:
    if not isinstance(one.value, Hours) or one.value.kind != "at" or one.value.first.is_plain:
        return False
    is_for = text.word(one.start) == "for" or text.word(one.start - 1) == "for"
    is_listed = text.cat(one.end) in ("or", "and") or text.cat(one.start - 1) in ("or", "and")
    return is_for and not is_listed


def _is_article(text: Text, at: int) -> bool:
    return text.cat(at) == "a" or text.word(at) == "un"


def _without_kinds(text: Text, found: list[Mention]) -> list[Mention]:
    """The mentions without `a weekend`, which is a kind of day beside a date that is named."""
    if not any(isinstance(one.value, Days) and (one.value.month or one.value.is_later) for one in found):
        return found
    return [one for one in found if not (text.cat(one.end - 1) == "weekend" and _is_article(text, one.end - 2))]


def _is_one_phrase(text: Text, one: Mention, following: Mention) -> bool:
    """Whether only glue stands between two mentions, so that they are one time."""
    return all(part in GLUE for part in stands_between(text, one, following))


def _is_joined_day(text: Text, one: Mention, following: Mention) -> bool:
    """Whether two days are said as one (`I work Monday through Thursday`), and the second is not said to suit."""
    if not (isinstance(one.value, Days) and isinstance(following.value, Days)):
        return False
    if text.cat(one.start) == "from" or text.cat(one.start - 1) == "from":
        return False
    is_joint = stands_between(text, one, following) in (["to"], ["dash"], ["and"], ["or"])
    return is_joint and not suits(text, following)


def _without_habits(text: Text, found: list[Mention]) -> list[Mention]:
    """The mentions without the Mondays of `my grandson drives me Mondays, so the 16th`, where that is a Monday."""
    plural = [one for one in found if _PLURAL_DAY.match(text.word(one.end - 1)) and text.cat(one.end) != "or"]
    dates = [one.value.days[0] for one in found if isinstance(one.value, Days) and one.value.days and one not in plural]
    return [
        one
        for one in found
        if one not in plural
        or not (isinstance(one.value, Days) and one.value.weekday in {date.weekday() for date in dates})
    ]


_PLURAL_DAY = re.compile(r"(?:mon|tues|wednes|thurs|fri|satur|sun)days$")
_FIRST_CHOICE = re.compile(
    r"\b(?:first|1 ?st|top|best|number one|number 1) (?:choice|pick|preference|option)\b|\b(?:ideal(?:ly)?|prefer\w*|"
    r"plan a)\b"
)
_SECOND_CHOICE = re.compile(
    r"\b(?:second|2 ?nd|next best|other) (?:choice|pick|preference|option)\b|\b(?:back ?up|fall ?back|plan b)\b"
)


def _as_preferred(plain: str, choices: list[Choice]) -> list[Choice]:
    """`Second choice the 17th, first choice the 12th`: in the order of preference that the text gives."""
    if len(choices) != _TWO:
        return choices
    first, second = _FIRST_CHOICE.search(plain), _SECOND_CHOICE.search(plain)
    return choices[::-1] if first and second and second.start() < first.start() else choices


_TWO = 2


def _is_past(one: Mention) -> bool:
    """Whether it is a day gone by (`yesterday`, `two weeks ago`), which no hour beside it can make a visit."""
    return isinstance(one.value, Days) and not one.value.days and not one.value.is_impossible


def _completes(text: Text, one: Mention, following: Mention) -> bool:
    """Whether a mention is the hour of the day just judged or the day of the hour: `to Friday at 6:30pm`."""
    joint = stands_between(text, one, following)
    if isinstance(one.value, Days):
        return isinstance(following.value, Hours | PartOfDay) and joint in ([], ["at"], ["dash"])
    is_hour = isinstance(one.value, Hours | PartOfDay)
    return is_hour and isinstance(following.value, Days) and joint in ([], ["on"])


def _is_any(plain: str) -> bool:
    return bool(_ANY.search(plain))


_ANY = re.compile(
    r"\b(any ?time|any ?day|any other (day|time)|cualquier otr[oa] (dia|hora)|me da igual (el dia|la hora)|"
    r"(la hora|hora|el dia) no (me )?importa|no (me )?importa (el dia|la hora)|(el|la|a la hora|el dia) que sea|"
    r"cuando ustedes (me )?(digan|gusten|quieran|puedan)|cuando haya (hueco|campo|lugar|espacio|chance)|whenever|"
    r"im flexible|flexible|asap|as soon as (possible|you (?:\w+ )?can)|"
    r"soonest|earliest (you have|available|possible|opening|appointment)"
    r"|first available|next available|cualquier (dia|hora|momento)|cuando (sea|puedan|quieran|"
    r"gusten|tengan)|lo antes posible|tan pronto como (?:sea posible|se pueda|puedan)|l[oa] mas pront(?:o|a|ito|"
    r"ita)( posible)?|"
    r"cuanto antes|right away|"
    r"today or tomorrow soon|slowest (?:day|time|for (?:you|u))|"
    r"(?:day|time|whenever|when (?:you|u|its|it is)) (?:\w+ ){0,3}(?:slow|"
    r"slowest|quiet|"
    r"quietest|least busy|less busy|not (?:so |too |as )?busy|lightest))\b"
)


_GLUE_ONLY = word_set(
    "word mark at on in of the a and or to from any this next coming last after before by until around between dash",
    "slash except correction instead_of early mid late past coming_after ahead ish onward orearlier",
)
"""Categories that alone make no time."""
_REACH = 7
"""How many symbols ahead of the time itself its glue can begin."""


_MOST_TIMES = 40
"""How many times of one text are read; nobody names more in earnest."""
_MOST_PLACES = 160
"""At how many places of a text a time is looked for."""


_EVERY_DAY = re.compile(
    r"\b(?:any ?day|week ?days?|every ?day|most days|whatever day|(?:during|in) the week|cualquier dia|entre semana|"
    r"todos los dias|los dias de semana)\b"
)


def _openings(text: Text) -> list[bool]:
    """For each symbol whether a time can begin there: a symbol that makes one stands there or soon after it."""
    can_open = [False] * len(text.symbols)
    ahead = 0
    for at in range(len(text.symbols) - 1, -1, -1):
        category = text.symbols[at].category
        ahead = ahead - 1 if category in _GLUE_ONLY else _REACH
        is_bare = category in ("word", "mark") and text.symbols[at].text not in _WORDS_THAT_OPEN
        can_open[at] = ahead > 0 and not is_bare
    return can_open


def _scan(text: Text) -> list[Mention]:
    found: list[Mention] = []
    can_open = _openings(text)
    at = places = 0
    while at < len(text.symbols) and len(found) < _MOST_TIMES and places < _MOST_PLACES:
        if not can_open[at]:
            at += 1
            continue
        places += 1
        one = _mention_at(text, at, found[-1] if found else None)
        if one is None or one.end <= at:
            at += 1
            continue
        if isinstance(one.value, Days) and one.value.month:
            text.month = one.value.month
        if isinstance(one.value, Hours) and one.value.first.is_plain:
            text.has_plain_hour = True
        if isinstance(one.value, PartOfDay) and one.value.name == "tonight":
            found.append(Mention(Days((text.today,)), one.start, one.end))
        found.append(one)
        at = one.end
    return found


def _mention_at(text: Text, at: int, previous: Mention | None) -> Mention | None:
    """The longest thing that begins here."""
    if text.cat(at) in ("from", "between") and days_of_one_month(text, at + 1):
        return None
    candidates: list[Mention] = []
    for rule in (
        hour_spans.instant,
        periods.bounded_day,
        periods.any_day,
        hour_spans.time_range,
        hour_spans.part_of_day,
    ):
        got = rule(text, at)
        if got:
            candidates.append(Mention(got[0], at, got[1]))
    day = _day_of_the_same_month(text, at, previous)
    if day:
        candidates.insert(0, day)
    hour = hour_spans.bounded_hour(text, at)
    if hour and is_hour(text, at, hour, previous):
        candidates.append(Mention(hour[0], at, hour[1]))
    candidates = [one for one in candidates if not _is_cut_range(text, one, previous)]
    return max(candidates, key=lambda one: one.end) if candidates else None


def _is_cut_range(text: Text, one: Mention, previous: Mention | None) -> bool:
    """A range of two bare numbers counts only where it can be hours."""
    if not isinstance(one.value, Hours) or one.value.kind != "between" or one.value.last is None:
        return False
    if text.word(one.end) in NO_HOUR_AFTER or (text.cat(one.end) == "unit" and text.name(one.end) not in ("hour",)):
        return True
    return text.word(one.start - 1) in ("$", "#")


def _day_of_the_same_month(text: Text, at: int, previous: Mention | None) -> Mention | None:
    """`March 5 or 6`, `the 5th to the 8th`: a number after a day of the month."""
    if not previous or not isinstance(previous.value, Days) or not previous.value.month or previous.end != at - 1:
        return None
    number_at = text.skip(at, "the")
    if text.cat(at - 1) not in ("or", "and", "to", "dash") or text.cat(number_at) not in ("num", "ordinal"):
        return None
    if (
        text.cat(number_at + 1) in ("ampm", "oclock", "month")
        or text.word(number_at + 1) in NO_HOUR_AFTER
        or not 1 <= text.value(number_at) <= 31
    ):
        return None
    month = previous.value.month
    try:
        day = month.replace(day=text.value(number_at))
    except ValueError:
        return None
    return Mention(Days((day,), month=month), at, number_at + 1) if day >= text.today else None


def _in_same_half(old: Mention, new: Mention) -> Mention:
    """`8pm needs to be changed to 9`: a bare hour near the one it replaces is in the same half-day."""
    if not (isinstance(old.value, Hours) and isinstance(new.value, Hours)) or new.value.kind != "at":
        return new
    was, told = old.value.first, new.value.first
    if not was.half or told.half or told.hour > 12 or abs(was.hour % 12 - told.hour % 12) > 2:
        return new
    return replace(new, value=replace(new.value, first=replace(told, half=was.half)))


def _is_preferred(text: Text, kept: list[Mention], one: Mention) -> bool:
    """`Tuesday or Thursday, but rather Thursday`: one of two days is preferred, and none taken back."""
    days = [old.value.days for old in kept if isinstance(old.value, Days)]
    start = text.symbols[one.start].start
    is_again = isinstance(one.value, Days) and len(days) > 1 and one.value.days in days
    return is_again and prefers(text.plain[max(0, start - _REACH_OF_CHOICE) : start])


_REACH_OF_CHOICE = 24


def _without_taken_back(text: Text, found: list[Mention]) -> list[Mention]:
    """The mentions without those that the text itself corrects (`tues, no wait wed`) or moves away from."""
    kept: list[Mention] = []
    for number, one in enumerate(found):
        way = is_taken_back(text, found[number - 1] if number else None, one)
        if way == "this":
            continue
        if way == "before" and _is_preferred(text, kept, one):
            way = ""
        is_time = not isinstance(one.value, Days)
        is_whole = number + 1 < len(found) and _completes(text, one, found[number + 1])
        if way == "before":
            one = _in_same_half(found[number - 1], one)
            while kept and (not is_time or is_whole or not isinstance(kept[-1].value, Days)):
                kept.pop()
        elif way == "other kind" and any(isinstance(old.value, Days) != is_time for old in kept):
            kept = [old for old in kept if not is_whole and isinstance(old.value, Days) == is_time]
        kept.append(one)
    return kept
