"""Count the words of our labeled replies and write those that are usual: a development script.

    python -m tests.replies.fit_words       writes followup/core/replies/usual_words/

A word stands there when replies of ours hold it; `OFTEN` those that a word near them was meant to be, the most
frequent first. A rare word one slip from a frequent one is taken for a typing error of ours and left out, unless
`SPARED` names it.
"""

from __future__ import annotations

import re
import unicodedata
from collections import Counter
from pathlib import Path

from followup.core.replies import usual_words
from followup.core.replies.plain import seen_language
from followup.core.replies.spelling import as_heard
from followup.core.replies.usual_words import MOST_LETTERS, SHORTEST, Usual
from tests.replies.fit_likeness import told
from tests.replies.spared_words import SPARED

OFTEN_FROM = 6
RARE = 2
MANY_TIMES = 10
"""So much more often than a rare word stands what it was meant to be."""
WIDTH = 118
FOLDER = Path(usual_words.__file__).parent
_LETTERS = re.compile(r"[a-z]+")


def counted() -> dict[str, Counter[str]]:
    """How many different replies of each language hold a word; one whose language does not show counts for both."""
    found: dict[str, Counter[str]] = {"en": Counter(), "es": Counter()}
    for text in sorted({text.lower() for _, text, _, _, _ in told()}):
        plain = "".join(char for char in unicodedata.normalize("NFKD", text) if ord(char) < 128).replace("'", "")
        language = seen_language(plain)
        for one, words in found.items():
            if language in (one, None):
                words.update(set(_LETTERS.findall(plain)))
    return found


def usual(language: str, words: Counter[str]) -> tuple[list[str], list[str]]:
    """The frequent words, the most frequent first, and the others that are no typing errors."""
    often = sorted((one for one in words if words[one] >= OFTEN_FROM), key=lambda one: (-words[one], one))
    meant = Usual(frozenset(), tuple(often), language)
    by_ear: dict[str, str] = {}
    for word in often if language == "es" else ():
        by_ear.setdefault(as_heard(word), word)
    others = []
    for word in sorted(one for one in set(words) - set(often) if SHORTEST <= len(one) <= MOST_LETTERS):
        near = by_ear.get(as_heard(word)) or meant.near(word)
        is_error = near and words[word] <= RARE and words[near] >= MANY_TIMES * words[word]
        if not is_error:
            others.append(word)
    return often, sorted({*others, *SPARED[language].split()} - set(often))


def block(name: str, words: list[str]) -> str:
    """The words as one string of the source."""
    lines = [""]
    for word in words:
        if len(lines[-1]) + len(word) + 1 > WIDTH:
            lines.append("")
        lines[-1] += f"{word} "
    body = "\n".join(line.rstrip() for line in lines)
    return f'{name} = """\\\n{body}\n"""\n'


def main() -> None:
    """Count and write."""
    for language, words in counted().items():
        name = {"en": "english", "es": "spanish"}[language]
        often, others = usual(language, words)
        title = f'"""Usual {name.title()} words of replies: made by `python -m tests.replies.fit_words`."""\n\n'
        (FOLDER / f"{name}.py").write_text(title + block("OFTEN", often) + block("OTHERS", others), encoding="utf-8")
        print(f"{name}: {len(often)} often, {len(others)} others")


if __name__ == "__main__":
    main()
