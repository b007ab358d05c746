"""Development script: how long the slowest of many long texts takes, each as long as a message can be.

`python -m tests.replies.slow_texts COUNT SEED` writes the times and the slowest text. Not a test: a shared machine
would make it fail by chance.
"""

from __future__ import annotations

import random
import sys
import time
from collections.abc import Callable

from followup.core.replies.words.english import ENTRIES as ENGLISH
from followup.core.replies.words.entry import word_set
from followup.core.replies.words.spanish import ENTRIES as SPANISH
from followup.rehearsal.bench.labeled_times import ENGLISH as SAID
from followup.rehearsal.bench.labeled_times import SPANISH as DICHO
from tests.replies.contract_cases import MEANINGS, TIMES
from tests.replies.reading import CONTEXTS, read

LONGEST = 1600
GOAL_SECONDS = 0.050
_PHRASES = [" ".join(entry.phrase) for entry in (*ENGLISH, *SPANISH)]
_SENTENCES = [text for _, text, *_ in (*MEANINGS, *TIMES, *SAID, *DICHO) if text]
_GLUE = sorted(
    word_set("the a of and or to from at on in not no but any after before by for my i it is was have de la el y o")
)
_MARKS = list(".,!?;:-/'\"()@&+$%\n")


def _words(pick: random.Random) -> str:
    return " ".join(pick.choice(_PHRASES) for _ in range(400))


def _sentences(pick: random.Random) -> str:
    return pick.choice((". ", " ", ", ", "\n")).join(pick.choice(_SENTENCES) for _ in range(120))


def _repeated(pick: random.Random) -> str:
    return (pick.choice(_PHRASES + _SENTENCES) + pick.choice((" ", ", ", "", "-", "/"))) * LONGEST


def _glue(pick: random.Random) -> str:
    return " ".join(pick.choice(_GLUE) for _ in range(900))


def _numbers(pick: random.Random) -> str:
    return "".join(
        str(pick.randrange(10 ** pick.randrange(1, 6))) + pick.choice((" ", "/", ":", "-", ".", ",", "am", "th "))
        for _ in range(700)
    )


def _typing_errors(pick: random.Random) -> str:
    letters = list(_sentences(pick)[: LONGEST * 2])
    for place in range(0, len(letters), pick.randrange(3, 12)):
        letters[place] = pick.choice("abcdefghijklmnopqrstuvwxyz")
    return "".join(letters)


def _anything(pick: random.Random) -> str:
    return "".join(chr(pick.choice((pick.randrange(32, 127), pick.randrange(160, 0xD7FF)))) for _ in range(LONGEST))


def _marks(pick: random.Random) -> str:
    return "".join(pick.choice((*_MARKS, pick.choice(_PHRASES), pick.choice(_GLUE) + " ")) for _ in range(900))


def _clauses_between(pick: random.Random) -> str:
    """Two or three times with long stretches of plain words between: what patterns that look far must not mind."""
    filler = [word for text in _SENTENCES for word in text.split() if word.isalpha()]
    return " ".join(
        pick.choice(_PHRASES) if pick.random() < 0.03 else pick.choice(filler) for _ in range(400)
    )  # fmt: skip


KINDS: tuple[Callable[[random.Random], str], ...] = (
    _words, _sentences, _repeated, _glue, _numbers, _typing_errors, _anything, _marks, _clauses_between,
)  # fmt: skip


def main() -> None:
    """Read so many texts and write the slowest."""
    count, seed = (int(one) for one in (*sys.argv[1:3], *("1000", "1")[len(sys.argv) - 1 :]))
    pick = random.Random(seed)
    slowest: list[tuple[float, str, str]] = []
    over = 0
    for number in range(count):
        kind = KINDS[number % len(KINDS)]
        text = kind(pick)[:LONGEST]
        started = time.process_time()
        read(text, pick.choice(sorted(CONTEXTS)))
        took = time.process_time() - started
        over += took > GOAL_SECONDS
        slowest = sorted([*slowest, (took, kind.__name__, text)], reverse=True)[:5]
    print(f"{count} texts of {LONGEST} characters; over {GOAL_SECONDS * 1000:.0f} ms of CPU time: {over}")
    for took, name, text in slowest:
        print(f"{took * 1000:6.1f} ms {name} {text[:90]!r}")


if __name__ == "__main__":
    main()
