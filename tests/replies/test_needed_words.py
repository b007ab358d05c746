"""Phrases that are tried only where their words stand find what one pattern of them all would find."""

from __future__ import annotations

import gc
import random
import re
from re import _constants as kinds
from re import _parser as parser
from typing import Any

from followup.core.replies.needed_words import needed, signs_of
from followup.core.replies.plain import make_plain
from followup.core.replies.said import Phrases, phrases
from followup.core.replies.understand import understand
from tests.replies import labeled_sets

LETTERS = "abcdefghijklmnopqrstuvwxyz"
SAYINGS = 12
"""How many texts are made of each phrase."""


def every_phrases() -> list[Phrases]:
    """All that were made when the reader was imported."""
    assert understand
    made = [one for one in gc.get_objects() if isinstance(one, Phrases)]
    assert len(made) > 90
    return made


def said_by(parts: Any, pick: random.Random) -> str:
    """A text that the parsed expression fits, but for what it looks at beside itself."""
    text = ""
    for kind, value in parts:
        match kind:
            case kinds.LITERAL:
                text += chr(value)
            case kinds.NOT_LITERAL | kinds.ANY | kinds.CATEGORY:
                text += pick.choice(LETTERS)
            case kinds.IN:
                text += one_in(value, pick)
            case kinds.BRANCH:
                text += said_by(pick.choice(value[1]), pick)
            case kinds.SUBPATTERN:
                text += said_by(value[-1], pick)
            case kinds.MAX_REPEAT | kinds.MIN_REPEAT:
                least, most, part = value
                text += "".join(said_by(part, pick) for _ in range(pick.randint(least, min(most, least + 2))))
            case kinds.ASSERT:
                text += said_by(value[1], pick) if value[0] > 0 and pick.random() < 0.5 else ""
    return text


def one_in(choices: Any, pick: random.Random) -> str:
    kind, value = pick.choice(choices)
    if kind == kinds.LITERAL:
        return chr(value)
    if kind == kinds.RANGE:
        return chr(pick.randint(*value))
    return "7" if value == kinds.CATEGORY_DIGIT else " " if value == kinds.CATEGORY_SPACE else pick.choice(LETTERS)


def test_whatever_a_phrase_fits_shows_a_sign_that_it_needs() -> None:
    pick = random.Random(7001)
    tried = fitting = 0
    for one in every_phrases():
        for line, signs in zip(one._lines, needed(one._lines), strict=True):
            pattern, parsed = re.compile(one._before + f"(?:{line})" + one._after), parser.parse(line)
            for _ in range(SAYINGS):
                text = said_by(parsed, pick)
                text = pick.choice(("", "so ", "x-", "9 ")) + text + pick.choice(("", " then", ".", "?"))
                found = pattern.search(text)
                tried += 1
                fitting += bool(found)
                assert not found or not signs or signs & signs_of(text), (line, text, signs)
    assert fitting > tried // 2


def test_most_phrases_need_a_word() -> None:
    found = [bool(signs) for one in every_phrases() for signs in needed(one._lines)]
    assert sum(found) > 0.98 * len(found)


def test_all_phrases_of_a_list_are_found_as_by_one_pattern() -> None:
    pick = random.Random(7002)
    cases = [text for _, text, *_ in (*labeled_sets.EARLIER, *labeled_sets.later()) if text]
    texts = [make_plain(text, None).text for text in pick.sample(cases, 250)]
    texts += [" ".join(pick.sample(texts, 6)) for _ in range(50)]
    for one in every_phrases():
        whole = re.compile(one._before + "(?:" + "|".join(one._lines) + ")" + one._after)
        for text in texts:
            told = [(found.span(), found.group()) for found in one.finditer(text)]
            # Behind openers of any length a list is only matched: how much of them a line takes concerns nobody.
            if one._before == r"\b":
                assert told == [(found.span(), found.group()) for found in whole.finditer(text)], (text, one._lines[0])
                assert one.sub(" ", text) == whole.sub(" ", text)
            assert bool(one.match(text)) == bool(whole.match(text))


def test_the_first_of_the_list_counts_where_two_stand_at_one_place() -> None:
    short_first, long_first = phrases("call", "call (?:me|us)"), phrases("call (?:me|us)", "call")
    assert [found.group() for found in short_first.finditer("please call me, call")] == ["call", "call"]
    assert [found.group() for found in long_first.finditer("please call me, call")] == ["call me", "call"]


def test_what_a_phrase_needs_is_told_from_its_surest_word() -> None:
    cases = {
        "(?:please )?stop(?:ping)? it": "stop", "(?:call|phone) me": "call phon", "no(?: more)? texts?": "text",
        "(?:re)?schedule": "", "brakes?": "brak", "cars?": "CAR", "(?:cost|total)s?": "cost tota", "to ?day": "TO",
    }  # fmt: skip
    assert [set(signs) for signs in needed(list(cases))] == [set(signs.split()) for signs in cases.values()]
