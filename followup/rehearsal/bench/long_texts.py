"""How long the slowest of many long replies takes, each as long as a text can be, and how long a reader takes to start.

The texts are made to be hard: times without end, words between them, marks, numbers, typing errors, any letters. What
took too long is read once more and the shorter time counts: a phrase is compiled where it first may stand, and another
process may have had the core's caches.
"""

from __future__ import annotations

import json
import os
import random
import resource
import statistics
import subprocess
import sys
import time
from collections.abc import Callable
from datetime import date, datetime
from typing import Any

from followup.core.replies.contract import KnownOdometer, ReplyIn
from followup.core.replies.understand import understand
from followup.core.replies.words.english import ENTRIES as ENGLISH_WORDS
from followup.core.replies.words.entry import word_set
from followup.core.replies.words.spanish import ENTRIES as SPANISH_WORDS
from followup.rehearsal.bench.figures import Figure, at_most, beside
from followup.rehearsal.bench.labeled_times import ENGLISH, NOW, SPANISH

LONGEST = 1_600
LONGEST_MS, _START_SECONDS = 50, 0.5
_OFFERED = (datetime.fromisoformat("2026-03-05T09:00"), datetime.fromisoformat("2026-03-06T14:00"))
_CONTEXTS: tuple[dict[str, Any], ...] = (
    {},
    {"asked": "day"},
    {"asked": "slot", "offered": _OFFERED},
    {"asked": "confirm", "booked": _OFFERED[0]},
    {"asked": "confirm_stop"},
    {"asked": "after_visit"},
    {"asked": "car", "cars": ("blue sedan", "white truck")},
    {"asked": "odometer", "odometer": KnownOdometer(value=47_000, unit="mi", on=date(2026, 1, 3), per_day=20)},
    {"asked": None},
)
_PHRASES = [" ".join(entry.phrase) for entry in (*ENGLISH_WORDS, *SPANISH_WORDS)]
_SENTENCES = [text for _, text, *_ in (*ENGLISH, *SPANISH) if text]
_PLAIN_WORDS = [word for text in _SENTENCES for word in text.split() if word.isalpha()]
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
    return " ".join(pick.choice(_PHRASES if pick.random() < 0.03 else _PLAIN_WORDS) for _ in range(400))


KINDS: tuple[Callable[[random.Random], str], ...] = (
    _words, _sentences, _repeated, _glue, _numbers, _typing_errors, _anything, _marks, _clauses_between,
)  # fmt: skip


def long_texts(count: int, seed: int) -> list[Figure]:
    """The slowest of so many long texts, by the process's own time."""
    pick = random.Random(seed)
    took = []
    for number in range(count):
        kind = KINDS[number % len(KINDS)]
        reply = ReplyIn(text=kind(pick)[:LONGEST], now=NOW, **pick.choice(_CONTEXTS))
        spent = _milliseconds(reply)
        took.append(min(spent, _milliseconds(reply)) if spent > LONGEST_MS else spent)
    texts = f"{count:,} texts of {LONGEST:,} characters"
    return [
        at_most(f"{texts}, the slowest", max(took), LONGEST_MS, 1, " ms"),
        beside(f"{texts}, over {LONGEST_MS} ms", sum(one > LONGEST_MS for one in took), 0),
        beside(f"{texts}, the middle one", statistics.median(took), 1, " ms"),
    ]


def _milliseconds(reply: ReplyIn) -> float:
    started = time.process_time()
    understand(reply)
    return (time.process_time() - started) * 1_000


def start(rounds: int) -> Figure:
    """From the call of `followup understand` to its end with one reply, by the process's own time; the middle one."""
    line = json.dumps({"text": "tuesday at 9 works", "now": NOW.isoformat()})
    took = []
    # As where it is installed: what the first start compiled is there for the next.
    environment = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
    for _ in range(rounds + 1):
        before = _spent_by_children()
        subprocess.run(
            [sys.executable, "-m", "followup.cli", "understand"],
            input=line,
            text=True,
            check=True,
            capture_output=True,
            env=environment,
        )
        took.append(_spent_by_children() - before)
    return at_most("start of `followup understand`, one reply", statistics.median(took[1:]), _START_SECONDS, 2, " s")


def _spent_by_children() -> float:
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    return used.ru_utime + used.ru_stime
