"""Which words a text must hold so that a phrase may stand in it, told from the phrase's regular expression.

Most phrases need a word that most texts lack. Whoever knows it neither compiles nor tries the phrase for those texts.
What cannot be told simply is not told: such a phrase is tried everywhere.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import lru_cache

from followup.core.replies.words.entry import word_set

Signs = frozenset[str]
"""How words begin: by four letters, or the whole of a shorter word; in capitals two or three letters of any word."""
ANY = ""
"""The sign that every text shows."""

_WORD_BEGINS = re.compile(r"(?<![a-z])[a-z]{1,4}")
_ENDS_A_WORD = re.compile(r"\\[Zb](?=[\s|])")
_NOT_PLAIN = re.compile(r"\\.|\[\^?\]?(?:\\.|[^\]\\])*\]")
_NO_SURE_SPACE = re.compile(r" (?=[?*{])")
_TIMES = r"(?:[?*+]\??|\{[\d,]*\}\??)?"
_KIND = r"(?:\?<?[:=!])?"
_SPACE_LAST = rf"{_KIND}(?:[^()|]* \|)*[^()|]* \){_TIMES}"
_SPACE_FIRST = rf"{_KIND}(?: [^()|]*\|)* [^()|]*\){_TIMES}"
_AHEAD = re.compile(rf"\((?<=[\s|]\(){_SPACE_LAST}(?:\({_SPACE_LAST})*")
"""Groups that end in a space: what follows begins a word with them or without."""
_BEHIND = re.compile(rf"\({_SPACE_FIRST}(?:\({_SPACE_FIRST})*(?=[\s|])")
"""Groups that begin with a space: what stands before ends a word with them or without."""
_ONE_OF = re.compile(r"\(\?:(?<=[\s|(:]\(\?:)([^()]*)\)(?![?*{])(?=([\s|]?))")
_OTHER_GROUP = re.compile(rf"\([^()]*\){_TIMES}")
_SIGN = (
    r"(?:([a-zA-Z]+(?:/[a-zA-Z]+)+|[A-Z]{{2,3}}|[a-z]{{4}}(?![?*{{])|[a-z]{{1,3}}(?=[ {ends}]{end}))"
    r"|([a-z]{{2,3}})(?![?*{{]))"
)
_OF_BRANCHES = {
    is_closed: re.compile(r"(?:\A|\|)" + _SIGN.format(ends="|" if is_closed else "", end=r"|\Z" if is_closed else ""))
    for is_closed in (False, True)
}
_OF_WORDS = re.compile(r"(?:\A|(?<= ))" + _SIGN.format(ends="", end=r"|\Z"))
_COMMON = word_set(
    "a i my me you it its the this that is are was to of for in on at and or not no can do dont have has be up out so"
    " im ive we he she they will woul just too el la los las lo le les se que de en un una mi te ya es y o con"
    " por para al del si su nos esta get got your"
)
"""Words that most texts hold, so that they tell little."""
_COMMON_COSTS = 12


@lru_cache(maxsize=1024)
def signs_of(text: str) -> Signs:
    """What the words of a plain text show."""
    begins = set(_WORD_BEGINS.findall(text))
    short = (one[:length].upper() for one in begins for length in (2, 3) if len(one) >= length)
    return frozenset((ANY, *begins, *short))


def needed(lines: Sequence[str]) -> list[Signs]:
    """For each regular expression signs of which a text must show one; none where they cannot be told.

    The expressions must stand as whole words: a boundary before them, no letter or digit after them.
    """
    text = ("\n" + "\n".join(lines) + "\n").replace("\n^", "\n").replace("|^", "|")
    text = _NO_SURE_SPACE.sub("#", _NOT_PLAIN.sub("#", _ENDS_A_WORD.sub("", text)))
    changes = 1
    while changes:
        text, ahead = _AHEAD.subn("", text)
        text, behind = _BEHIND.subn("", text)
        text, choices = _ONE_OF.subn(_one_of, text)
        changes = ahead + behind + choices
        if not changes:
            text, changes = _OTHER_GROUP.subn("#", text)
    return [_of_line(line) for line in text[1:-1].split("\n")]


def _one_of(found: re.Match[str]) -> str:
    """A group as the signs of how its branches begin, parted by `/`."""
    group, after = found.groups()
    is_closed = after != ""
    signs = _OF_BRANCHES[is_closed].findall(group)
    if len(signs) <= group.count("|"):
        return "#"
    return "/".join([whole or part.upper() for whole, part in signs]) + ("" if is_closed else "#")


def _of_line(line: str) -> Signs:
    """What one line needs: of each of its branches the signs that tell most."""
    needs: list[str] = []
    for branch in line.split("|"):
        signs = [whole or part.upper() for whole, part in _OF_WORDS.findall(branch)]
        if not signs or "(" in branch:
            return frozenset()
        needs += (min(signs, key=_cost) if len(signs) > 1 else signs[0]).split("/")
    return frozenset(needs)


def _cost(sign: str) -> tuple[int, int]:
    """How often it shows in a text, roughly: few choices, and rare and long ones, come first."""
    if "/" not in sign:
        return _COMMON_COSTS if sign in _COMMON else 1, -len(sign)
    choices = sign.split("/")
    return sum(_COMMON_COSTS if one in _COMMON else 1 for one in choices), -min(map(len, choices))
