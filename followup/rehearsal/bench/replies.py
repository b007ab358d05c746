"""`followup bench replies`: how right and how fast times are read, beside general-purpose readers, in one run.

The sentences are our own (the table that the tests hold, and what a small grammar says), so ours is tuned on the first;
the scoring is generous to the others: any clock time that fits an end or the middle of a window counts.
"""

from __future__ import annotations

import random
import statistics
import time
from collections import Counter
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from typing import Literal

from followup.core.replies.contract import ReplyIn
from followup.core.replies.understand import understand
from followup.rehearsal.bench.figures import Figure, at_least
from followup.rehearsal.bench.labeled_times import ENGLISH, NOW, SPANISH, Told
from followup.rehearsal.bench.long_texts import long_texts, start
from followup.rehearsal.bench.other_readers import OTHERS, Reader, is_installed
from followup.rehearsal.bench.said_times import speak

LANGUAGE_WORDS = {"en": "English", "es": "Spanish"}
STEPS = 2 * len(LANGUAGE_WORDS) + 2
_RIGHT, _A_SECOND = 95, 1_000
OURS = "followup"

Found = tuple[date | None, frozenset[int]] | None
"""The day and the clock times (minutes of the day) that were read; None where nothing was."""


@dataclass(frozen=True)
class Asked:
    """How many sentences the grammar says in each language, how many rounds are timed, long texts, and the seed."""

    said: int
    rounds: int
    long: int
    seed: int


@dataclass(frozen=True)
class Sentence:
    """A text and what it names: no day where it names no visit time; any clock time fits where there is none."""

    text: str
    asked: Literal["visit", "day"]
    day: date | None
    clocks: frozenset[int]


SentenceReader = Callable[[Sentence], Found]


def bench_replies(asked: Asked, progress: Callable[[int], object]) -> list[Figure]:
    """The whole table."""
    figures = []
    for language in LANGUAGE_WORDS:
        sentences = [*_labeled(language), *_said(language, asked)]
        readers = _readers(language)
        figures += [_accuracy(name, read, sentences, language) for name, read in readers.items()]
        progress(1)
        figures += _speeds(readers, sentences[: asked.said], asked.rounds, language)
        progress(1)
    missing = [name for name in OTHERS if not is_installed(name)]
    figures += long_texts(asked.long, asked.seed)
    progress(1)
    figures.append(start(asked.rounds))
    progress(1)
    return [*figures, *(Figure(name, "not installed") for name in missing)]


def _labeled(language: str) -> list[Sentence]:
    """Of the labeled table what names one window, or no visit time at all: all that one moment can answer."""
    rows = ENGLISH if language == "en" else SPANISH
    made = (_sentence(row) for row in rows)
    return [one for one in made if one]


def _sentence(row: Told) -> Sentence | None:
    context, text, told = row
    windows = told.get("t", [])
    asked: Literal["visit", "day"] = "visit" if context == "visit" else "day"
    if context not in ("visit", "day"):
        return None
    if not told:
        return Sentence(text, asked, None, frozenset())
    if len(windows) != 1 or "a" in told or "closed" in windows[0] or ".." in windows[0] or told.get("q"):
        return None
    day, _, clock = windows[0].partition(" ")
    month, number = (int(part) for part in day.split("-"))
    ends = [int(at[:2]) * 60 + int(at[3:]) for at in clock.split("-") if at]
    return Sentence(text, asked, date(NOW.year, month, number), _fitting(ends))


def _fitting(ends: Sequence[int]) -> frozenset[int]:
    return frozenset((*ends, sum(ends) // len(ends))) if ends else frozenset()


def _said(language: str, asked: Asked) -> list[Sentence]:
    pick = random.Random(asked.seed)
    spoken = [speak(pick, NOW, language) for _ in range(asked.said)]
    return [
        Sentence(one.text, "day", one.day, _fitting([at for at in (one.first, one.last) if at is not None]))
        for one in spoken
    ]


def _readers(language: str) -> dict[str, SentenceReader]:
    def ours(sentence: Sentence) -> Found:
        out = understand(ReplyIn(text=sentence.text, now=NOW, asked=sentence.asked))
        if not out.times:
            return None
        first = out.times[0]
        day = None if first.start.startswith("T") else date.fromisoformat(first.start[:10])
        told = [first.start, first.end] if first.grain in ("time", "part") else []
        return day, _fitting([int(at[-5:-3]) * 60 + int(at[-2:]) for at in told if at])

    readers: dict[str, SentenceReader] = {OURS: ours}
    for name, (_, languages, make) in OTHERS.items():
        if language in languages and is_installed(name):
            readers[name] = _as_found(make(NOW, language))
    return readers


def _as_found(read: Reader) -> SentenceReader:
    def found(sentence: Sentence) -> Found:
        at: datetime | None = read(sentence.text)
        return (at.date(), frozenset({at.hour * 60 + at.minute})) if at else None

    return found


def verdict(found: Found, sentence: Sentence) -> str:
    """`right`, `wrong` or `silent`: a time where there is none is wrong, nothing where there is one is silent."""
    if sentence.day is None:
        return "wrong" if found else "right"
    if found is None or found[0] is None:
        return "silent"
    fits = found[0] == sentence.day and (not sentence.clocks or bool(found[1] & sentence.clocks))
    return "right" if fits else "wrong"


def _accuracy(name: str, read: SentenceReader, sentences: list[Sentence], language: str) -> Figure:
    count = Counter(verdict(read(one), one) for one in sentences)
    shares = [100 * count[kind] / len(sentences) for kind in ("right", "wrong", "silent")]
    check = f"{LANGUAGE_WORDS[language]}, {len(sentences)} sentences, right/wrong/silent: {name}"
    found = " / ".join(f"{share:.1f}" for share in shares) + " %"
    return Figure(check, found, f">= {_RIGHT} % right", shares[0] >= _RIGHT) if name == OURS else Figure(check, found)


def _speeds(readers: dict[str, SentenceReader], sentences: list[Sentence], rounds: int, language: str) -> list[Figure]:
    """Replies a second by the median of the rounds, in which the readers take turns."""
    took: dict[str, list[float]] = {name: [] for name in readers}
    for _ in range(rounds):
        for name, read in readers.items():
            started = time.process_time()
            for one in sentences:
                read(one)
            took[name].append(time.process_time() - started)
    middle = {name: max(statistics.median(times), 1e-9) for name, times in took.items()}
    figures = [
        at_least(f"{LANGUAGE_WORDS[language]}, replies a second: {OURS}", len(sentences) / middle[OURS], _A_SECOND, 0)
    ]
    for name in (name for name in readers if name != OURS):
        found = f"{len(sentences) / middle[name]:,.0f} (x {middle[OURS] / middle[name]:.2f} of ours)"
        figures.append(Figure(f"{LANGUAGE_WORDS[language]}, replies a second: {name}", found))
    return figures
