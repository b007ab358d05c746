"""Words that are said again and again are read in no time: no pattern has two ways to go on for the same words.

A text of 22 times "super" once took longer than anybody waited: two ways for each word are four million for all.
"""

from __future__ import annotations

import ast
import random
import re
import time
from pathlib import Path

import pytest

from followup.core import replies
from tests.replies.reading import read

ROOT = Path(replies.__file__).parent
MOST_CHARACTERS = 1_600
# Generous for a machine that does much else; what blows up takes hours.
MOST_SECONDS = 1.0
# A group of plain alternatives that may follow each other any number of times.
AGAIN = re.compile(r"\(\?:\(\?:([^()]*)\)[^()|]{0,6}\)(?:[*+]|\{\d*,\})|\(\?:([^()]*)\)(?:[*+]|\{\d*,\})")


def constants() -> list[tuple[str, str]]:
    """Every text of the sources that holds alternatives, with where it stands."""
    found = []
    for path in sorted(ROOT.rglob("*.py")):
        if path.parent.name == "likeness_weights":
            continue
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Constant) and isinstance(node.value, str) and "|" in node.value:
                found.append((f"{path.name}:{node.lineno}", node.value))
    return found


def test_what_may_follow_itself_has_one_way_for_the_same_words() -> None:
    twofold = {}
    for where, pattern in constants():
        for group in AGAIN.finditer(pattern):
            ways = [one.strip() for one in (group[1] or group[2] or "").split("|")]
            several = {one for one in ways if " " in one and all(word in ways for word in one.split())}
            if len(set(ways)) < len(ways) or several:
                twofold[where] = sorted(several | {one for one in ways if ways.count(one) > 1})
    assert twofold == {}


def words() -> list[str]:
    """Plain words of all patterns."""
    parts = {part.strip() for _, pattern in constants() for part in re.split(r"[|()?:\[\]{}\\]+", pattern)}
    return sorted(part for part in parts if re.fullmatch(r"[a-z']+(?: [a-z']+){0,2}", part))


@pytest.mark.parametrize("seed", range(4))
def test_words_of_our_own_said_again_and_again_are_read_in_no_time(seed: int) -> None:
    drawn = random.Random(seed)
    every = words()
    assert len(every) > 5_000
    for _ in range(150):
        some = drawn.sample(every, drawn.choice((1, 1, 2, 3)))
        text = " ".join(drawn.choice(some) for _ in range(MOST_CHARACTERS))[:MOST_CHARACTERS]
        begun = time.process_time()
        read(text, "visit")
        assert time.process_time() - begun < MOST_SECONDS, some


@pytest.mark.parametrize("word", ["super", "ok", "ok super", "and also", "gauge needle is", "yes ok", "bueno ok"])
def test_words_that_once_took_for_ever(word: str) -> None:
    for text in (word, f"the temp {word}"):
        begun = time.process_time()
        read((text.split(" ")[0] + f" {word}" * MOST_CHARACTERS)[:MOST_CHARACTERS] + " xyz", "visit")
        assert time.process_time() - begun < MOST_SECONDS
