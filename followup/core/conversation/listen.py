"""What the conversation must know of a text beside its meaning: severity, legal words, a death, a judgment, a reaction.

And which of several texts is read first. The word lists of symptoms are those of reply understanding; what stands here
is only what the contract has no code for.
"""

from __future__ import annotations

import re
from collections.abc import Hashable, Iterable
from datetime import datetime

from followup.core.conversation.state import Heard, Severity
from followup.core.replies import symptoms
from followup.core.replies.contract import ReplyIn, ReplyOut
from followup.core.replies.plain import make_plain
from followup.core.replies.understand import understand

_KIN = "husband|wife|father|mother|dad|mom|son|daughter|brother|sister|grandma|grandpa"
_PARIENTE = "esposo|esposa|marido|papa|padre|mama|madre|hijo|hija|hermano|hermana|abuelo|abuela"
# "She died on the highway" is a car: a bare pronoun says nothing here, and a car that "passed away" is no death.
_DEATH = re.compile(
    rf"(?<!car )(?<!truck )(?<!van )(?<!battery )\bpassed away\b|\bdeceased\b|\bdeath certificate\b"
    rf"|\bmy (?:late )?(?:{_KIN}) (?:has |just )?(?:died|passed)\b"
    rf"|\b(?:ha )?fallecio\b|\bfallecid[oa]\b|\bmi (?:{_PARIENTE}) (?:ya )?(?:murio|ha muerto)\b"
)
# What phones put before our own words when somebody presses a reaction, with any of the quotes they use.
_QUOTE = '["\u201c\u201d\u00ab\u201e]'
_REACTION = re.compile(
    rf"^\s*(?:(?:liked|loved|disliked|laughed at|emphasized|questioned|removed an? .{{1,20}} from|"
    rf"le gust\u00f3|no le gust\u00f3|le encant\u00f3|se ri\u00f3 de|enfatiz\u00f3|cuestion\u00f3)\s*{_QUOTE}"
    rf"|(?:reacted|reaccion\u00f3)\b.{{0,40}}\b(?:to|con|a)\b.{{0,20}}{_QUOTE}).*{_QUOTE}\s*$",
    re.IGNORECASE | re.DOTALL,
)


# Neither a stop nor a symptom is told by the day on which it comes.
_ANY_DAY = datetime.fromisoformat("2026-01-05T12:00")
# "Am I talking to a machine?", in the words that people use for it.
_MACHINE = re.compile(
    r"\b(?:are you|r u|is this|is it|am i (?:texting|talking to|writing to)) (?:a |an |the )?(?:\w+ )?"
    r"(?:machine|robot|bot|chatbot|computer|ai|automated|automatic|human|real person|person)\b"
    r"|\b(?:eres|es usted|esto es|es esto|hablo con|habla) (?:con )?(?:un |una )?"
    r"(?:maquina|robot|bot|computadora|persona|humano|sistema)\b"
)


def asks_whether_machine(text: str) -> bool:
    """True where the customer asks whether a machine answers: then it says so."""
    return bool(_MACHINE.search(make_plain(text, None).text))


def urgency(text: str) -> int:
    """0 where the text says or may say that we shall stop, 1 where it tells a symptom, else 2."""
    reply = understand(ReplyIn(text=text, now=_ANY_DAY, asked=None))
    if "stop" in reply.meanings or reply.question == "confirm_stop":
        return 0
    return 1 if "symptom" in reply.meanings else 2


def stops_first(texts: Iterable[tuple[Hashable, str]]) -> list[int]:
    """The places of these texts (who wrote it, the words) in the order in which they are read after a silence.

    Who wrote a stop comes first, then who told a symptom; each writer's own texts stay in their order, because a later
    word takes an earlier one back.
    """
    told = list(texts)
    if len(told) < 2:
        return list(range(len(told)))
    most_urgent: dict[Hashable, int] = {}
    for writer, text in told:
        most_urgent[writer] = min(most_urgent.get(writer, 2), urgency(text))
    return sorted(range(len(told)), key=lambda place: most_urgent[told[place][0]])


def is_reaction(text: str) -> bool:
    """True where the text is a phone's reaction to one of ours, and nothing else: our words in quotes, to the end."""
    return bool(_REACTION.search(text))


def hear(text: str, reply: ReplyOut) -> Heard:
    """The reply with what the safety word lists find in the text as it was received."""
    if is_reaction(text):
        return Heard(reply, is_reaction=True)
    plain = make_plain(text, reply.language).text
    return Heard(
        reply,
        symptom=_severity(text),
        has_legal_words=symptoms.has_legal_words(text),
        tells_of_death=bool(_DEATH.search(plain)),
        is_judgment=symptoms.judgment(text),
    )


def _severity(text: str) -> Severity | None:
    if symptoms.is_flat_only(text):
        return "flat"
    found = symptoms.severity(text)
    return "now" if found == "stop_now" else found
