"""A phone's reaction that quotes our words: the quoted words are cut off before reading and never count."""

from __future__ import annotations

import re
from dataclasses import dataclass

_VERBS = (
    r"(?:liked|loved|disliked|emphasized|questioned|laughed at|removed (?:a |an )?\w+ from|reacted (?:\S+ )?to"
    r"|le gust[oó]|le encant[oó]|no le gust[oó]|enfatiz[oó]|cuestion[oó]|se ri[oó] de|me gusta|le encanta|destac[oó]"
    r"|reaccion[oó] (?:con )?(?:\S+ )?(?:a|en)|elimin[oó] \w+(?: \w+)? de|le di[oó] risa)"
)
_QUOTED = re.compile(
    rf"^\s*(?P<verb>{_VERBS})\s*:?\s*(?P<quote>[\"\u201c\u201d\u00ab\u2018\u2019'].*(?:[\"\u201c\u201d\u00bb\u2019'](?=\s|"
    rf"$|[.!,])|$))",
    re.IGNORECASE | re.DOTALL,
)
_OF_A_PICTURE = re.compile(
    rf"^\s*{_VERBS} (?:an? |una? )?(?:image|photo|picture|message|imagen|foto|mensaje)\s*$", re.IGNORECASE
)
_APPROVES = re.compile(
    r"^(?:liked|le gust|me gusta|reacted [\U0001f44d\U0001f44c].* to|reaccion[oó] (?:con )?[\U0001f44d\U0001f44c])",
    re.IGNORECASE,
)


@dataclass(frozen=True)
class Reaction:
    """What is left of a text without the reaction; `approves` for a thumbs up, None where it is no reaction."""

    rest: str
    approves: bool | None


def cut_reaction(text: str) -> Reaction:
    """The text without the reaction that begins it and the words of ours that it quotes."""
    found = _QUOTED.match(text) or _OF_A_PICTURE.match(text)
    if not found:
        return Reaction(text, None)
    return Reaction(text[found.end() :], bool(_APPROVES.match(text.strip())))
