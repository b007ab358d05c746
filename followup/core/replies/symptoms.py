"""What a customer reports about a car that may be unsafe now, and how soon a person must look at it.

`stop_now` and `today` follow the trade's two kinds; in doubt the stricter one counts.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from functools import lru_cache
from typing import Literal

from followup.core.replies import fault_excuses as excuses
from followup.core.replies.fault_idioms import is_over
from followup.core.replies.fault_phrases import NOW
from followup.core.replies.fault_phrases import TODAY as TODAY_PHRASES
from followup.core.replies.fault_reports import IS_CUT
from followup.core.replies.fault_reports import NOW as NOW_REPORTS
from followup.core.replies.fault_reports import TODAY as TODAY_REPORTS
from followup.core.replies.fault_rules import Kind
from followup.core.replies.fault_spanish import SPANISH_NOW, SPANISH_TODAY
from followup.core.replies.faults import Found, found_in
from followup.core.replies.plain import make_plain
from followup.core.replies.said import Phrases, Said, phrases
from followup.core.replies.symptom_words import BRAKES, BULGE, FLAT, HEAT, LAMPS, STEERING
from followup.core.replies.symptom_words_today import TODAY

Severity = Literal["stop_now", "today"]

_OVER = re.compile(
    r"\b(?:lawyers?|attorneys?|(?:to|ill|gonna|will|and) sue|sue (?:you|u|yall|them|this)|"
    r"suing|lawsuit|legal action|injur(?:y|ed|ies)|hurt (?:me|my|us|"
    r"in)|ambulance|accident|crash(?:ed)?|wreck(?:ed)?|collision|(?:caught|was on|had a|"
    r"been a) fire|burned (?:down|up)|police report|insurance claim|abogad[oa]s?|demanda(?:r|"
    r"rlos)?|lesion\w*|heridos?|ambulancia|accidente|choque|choco|chocamos|"
    r"se (?:incendio|quemo)|demandar\w*)\b"
)

_LISTS: tuple[tuple[Kind, Phrases], ...] = (
    ("flat", phrases(*FLAT)),
    ("now", phrases(*BULGE, *BRAKES, *STEERING, *HEAT, *LAMPS, *NOW, *NOW_REPORTS, *SPANISH_NOW)),
    ("today", phrases(*TODAY, *TODAY_PHRASES, *TODAY_REPORTS, *SPANISH_TODAY)),
)
_BEYOND_FLAT = phrases(*BULGE, *BRAKES, *STEERING)
_NEGATIVE = re.compile(
    r"(?:wont|cant|no|not|doesnt|dont|barely|hardly|didnt|couldnt|wouldnt|without|lost|sin|casi|never|trouble|ni|"
    r"hasnt|havent|nothing|nomas)\b"
)
"""How a report begins of which a `not` is a part."""
_JUDGMENT = re.compile(
    r"\b(?:(?:is|was) (?:it|that|this) (?:still )?(?:safe|ok|okay|dangerous|alright|fine|bad|"
    r"urgent|serious)|safe to|ok to drive|okay to drive|can (?:it|this|that) wait|"
    r"can i wait(?! (?:there|here|in|at|inside|while|for (?:it|the))\b)|how long can|"
    r"how long (?:do|will) (?:i|it|they) (?:have|last)|can i (?:still |keep )?(?:drive|make it)|"
    r"will (?:it|they) (?:last|make it|hold|be ok)|should i (?:worry|be worried|drive|stop|wait)|"
    r"how (?:urgent|bad|serious|soon)|"
    r"do i (?:really )?(?:have|need) to|road trip|long (?:drive|trip)|with (?:my |the )?(?:kids?|"
    r"children|baby)|my (?:kids?|baby|children)|is it an emergency|what happens if|"
    r"drive (?:it )?(?:to|on|until|till)|trip|"
    r"es (?:segur[oa]|peligros[oa]|grave|urgente|seri[oa])|puedo (?:manejar|seguir|"
    r"conducir|andar|viajar|usar)|"
    r"puedo esperar(?! (?:ahi|aqui|alli|alla|en|adentro|mientras)\b)|"
    r"puede esperar|cuanto (?:aguanta|dura|puedo esperar|"
    r"tiempo (?:aguanta|puedo))|aguanta\w*|hay peligro|que tan (?:grave|urgente|mal|malo|"
    r"peligroso)|viaje|con (?:mis |los )?(?:ninos|hijos|nietos)|mis hijos|que pasa si|"
    r"debo preocuparme)\b"
)


def _plain(text: str) -> str:
    return make_plain(text, None).text


def _reports_in(plain: str) -> Iterator[Found]:
    """The reports of a plain text, from the lists and from the grammar, excused or not, at their places in it."""
    for match in _CLAUSE.finditer(plain):
        clause, offset = match.group(), match.start()
        for found in found_in(clause):
            yield found.moved(offset)
        for kind, pattern in _LISTS:
            for one in pattern.finditer(clause):
                is_negative = bool(_NEGATIVE.match(one.group()))
                yield Found(one.start() + offset, one.end() + offset, one.start() + offset, kind, is_negative)


_CLAUSE = re.compile(r"[^.!?;\n]+")


def _standing(plain: str) -> Iterator[Found]:
    """The reports that nothing takes away, also where the `is` of `the engine's flashing` lost its apostrophe."""
    yield from _unexcused(plain)
    if IS_CUT.search(plain):
        yield from _unexcused(IS_CUT.sub(r"\1 is ", plain))


def _unexcused(plain: str) -> Iterator[Found]:
    cleaned = excuses.cleaned(plain)
    is_first = True
    for one in _reports_in(cleaned):
        if is_first and (excuses.is_of_the_past(plain) or excuses.is_of_a_bike(plain) or excuses.is_a_joke(plain)):
            return
        is_first = False
        if not _is_excused(cleaned, one):
            yield one


def _is_excused(plain: str, one: Found) -> bool:
    begin = max(plain.rfind(mark, 0, one.start) for mark in ".!?;\n") + 1
    ends = [place for mark in ".!?;\n" if (place := plain.find(mark, one.start)) >= 0]
    clause = plain[begin : min(ends, default=len(plain))]
    words = plain[one.start : one.end]
    if not one.is_negative and excuses.is_denied(clause, one.fault - begin, excuses.tells_of_repair(plain)):
        return True
    return (
        excuses.is_of_a_wiper(clause, words)
        or excuses.is_of_another_thing(clause, one.start - begin, one.end - begin)
        or excuses.is_supposed(plain, one.start, one.fault)
        or excuses.is_cured(plain, one.start, one.end, one.fault)
        or excuses.is_what_we_told(clause, one.start - begin)
    )


@lru_cache(maxsize=256)
def reports(plain: str, is_after_visit: bool = False) -> bool:
    """Whether a plain text reports a symptom; after a visit, what is no longer so was repaired there."""
    if is_after_visit and is_over(plain):
        return False
    return any(True for _ in _standing(plain))


def may_report(plain: str) -> bool:
    """Whether nothing in a plain text tells against a symptom: no harmless use, no report that something takes away."""
    if excuses.is_harmless(plain) or excuses.is_of_the_past(plain) or excuses.is_of_a_bike(plain):
        return False
    return not excuses.is_a_joke(plain) and not any(True for _ in _reports_in(plain))


def without_reports(said: Said) -> Said:
    """The same text without the words of its symptoms, for what else stands in it."""
    text = said.text
    for one in sorted(_reports_in(text), key=lambda found: -found.start):
        text = text[: one.start] + " ; " + text[one.end :]
    return replace(said, text=text)


def severity(text: str) -> Severity | None:
    """How soon a person must act on what this text reports; None where it reports nothing. The stricter in doubt."""
    kinds = {one.kind for one in _standing(_plain(text))}
    if kinds & {"flat", "now"}:
        return "stop_now"
    return "today" if kinds else None


def is_flat_only(text: str) -> bool:
    """Whether a flat is all that it reports, with nothing about brakes, steering, a wobble, a bulge or cord."""
    plain = _plain(text)
    kinds = {one.kind for one in _standing(plain)}
    return "flat" in kinds and not _BEYOND_FLAT.search(plain)


def has_legal_words(text: str) -> bool:
    """Whether injury, a lawyer, a crash, or a fire that is over stands in it."""
    return bool(_OVER.search(_plain(text)))


def judgment(text: str) -> bool:
    """Whether it asks for a judgment that no text may give: is it safe, can it wait, a trip, kids."""
    plain = _plain(text)
    return bool(_JUDGMENT.search(plain)) and (
        "?" in text or bool(re.search(r"\b(?:can|is|should|will|do|how|puedo|es|que|cuanto|aguanta|debo)\b", plain))
    )
