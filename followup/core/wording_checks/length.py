"""How long a text may be, which characters make it cost more, and how easily it must read."""

from __future__ import annotations

from collections.abc import Iterable

from followup.core.readability import fernandez_huerta_ease, flesch_kincaid_grade
from followup.core.segments import beyond_gsm7, segments
from followup.core.wording_checks.checked import CheckedText, Fault

# Plain-language guidance asks for grade 7-8; the Spanish gate is "fairly easy" (from memory).
MOST_GRADE_EN = 8.0
LEAST_EASE_ES = 70.0
# Segments a text may cost. Spanish is spelled as it should be: the shipped texts choose words without á, í, ó, ú, which
# GSM-7 lacks, but a fact ("sábado") may hold one, and then the text travels as UCS-2 in parts of 67 instead of 153.
MOST_SEGMENTS = {
    "GSM-7": {"invite": 3, "visit": 3, "answer": 4},
    "UCS-2": {"invite": 6, "visit": 6, "answer": 8},
}
_SPANISH_LETTERS = frozenset("áíóúÁÍÓÚ")


def length_faults(one: CheckedText) -> Iterable[Fault]:
    """Too many segments, and as a hint the characters that make the text travel as UCS-2."""
    if one.is_a_persons:
        return
    cut = segments(one.said)
    most = MOST_SEGMENTS[cut.encoding][one.reason.kind]
    if cut.count > most:
        yield Fault("length", f"It takes {cut.count} segments; {most} is the most. Say it in fewer words.")
    letters = beyond_gsm7(one.said)
    strange = [char for char in letters if one.language != "es" or char not in _SPANISH_LETTERS]
    if strange:
        says = f"“{' '.join(strange)}” makes the text cost up to twice as much. Write it with plain letters."
        yield Fault("characters", says, is_stopping=False)


def reading_faults(one: CheckedText) -> Iterable[Fault]:
    """Harder to read than the gate of its language."""
    if one.is_a_persons:
        return
    if one.language == "en" and (grade := flesch_kincaid_grade(one.graded)) > MOST_GRADE_EN:
        yield Fault("reading grade", f"It reads at grade {grade:.1f}; 8 is the most. Use shorter words and sentences.")
    if one.language == "es" and (ease := fernandez_huerta_ease(one.graded)) < LEAST_EASE_ES:
        yield Fault("reading grade", f"Its ease is {ease:.0f}; 70 is the least. Use shorter words and sentences.")
