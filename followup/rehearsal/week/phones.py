"""A customer's phone: puts what is meant into words of the grammar, with the noise of thumbs and hurry."""

from __future__ import annotations

from random import Random

from followup.rehearsal.week.sayings import AFTER, BEFORE, CLOCKS, DAYS, PARTS, SAYINGS, SHORTENED

# Where a slip of the thumb could make a text one of which nobody could say what it means.
SAID_PLAINLY = frozenset({"stop", "start", "help", "symptom_now", "symptom_today", "yes_stop", "no_stop", "odometer"})
_LONG_WORD = 5


def words_of(meant: str, language: str, random: Random, *, miles: float = 40_000.0, slots: int = 3) -> str:
    """A text that means it. `miles` is what the odometer shows, `slots` how many times were offered."""
    spoken = language if language in SAYINGS else "en"
    filled = random.choice(SAYINGS[spoken][meant]).format(
        day=random.choice(DAYS[spoken]), clock=random.choice(CLOCKS[spoken]), part=random.choice(PARTS[spoken]),
        miles=_distance(miles, random), number=random.randint(1, max(slots, 1)),
    )  # fmt: skip
    return _cased(filled, random) if meant in SAID_PLAINLY else _noisy(filled, spoken, random)


def _distance(miles: float, random: Random) -> str:
    whole = int(miles)
    return random.choice((f"{whole}", f"{whole:,}", f"{whole / 1000:.1f}k"))


def _cased(words: str, random: Random) -> str:
    return random.choice((words, words, words.lower(), words.capitalize(), f"{words}."))


def _noisy(words: str, language: str, random: Random) -> str:
    if random.random() < 0.2:
        words = random.choice(BEFORE[language]) + words
    if random.random() < 0.2:
        words += random.choice(AFTER[language])
    if random.random() < 0.15:
        words = " ".join(SHORTENED.get(word, word) for word in words.split(" "))
    if random.random() < 0.15:
        words = _mistyped(words, random)
    if random.random() < 0.15:
        words = words.replace(",", "").replace(".", "").replace("?", "")
    return _cased(words, random)


def _mistyped(words: str, random: Random) -> str:
    """Two letters of one long word change places, or one is missing."""
    parts = words.split(" ")
    long = [place for place, word in enumerate(parts) if len(word) >= _LONG_WORD and word.isalpha()]
    if not long:
        return words
    place = random.choice(long)
    word = parts[place]
    at = random.randint(1, len(word) - 3)
    swapped = word[:at] + word[at + 1] + word[at] + word[at + 2 :]
    parts[place] = random.choice((swapped, word[:at] + word[at + 1 :]))
    return " ".join(parts)
