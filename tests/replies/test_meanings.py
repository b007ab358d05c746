"""Every meaning: a file of its own with examples in both languages, each understood as its meaning."""

from __future__ import annotations

import pytest

from followup.core.replies.intents import ALL
from followup.core.replies.meaning import LANGUAGES, MEANINGS
from tests.replies.reading import read

LEAST_EXAMPLES = 25

# Meanings whose examples are answers to something: the context that they are read in.
READ_IN = {
    "running_late": "confirm",
    "cancel": "confirm",
    "move": "confirm",
    "choose": "slot",
    "odometer": "known",
}
EXAMPLES = [(one.CODE, language, text) for one in ALL for language in LANGUAGES for text in one.EXAMPLES[language]]


def test_every_meaning_has_its_file_in_the_order_of_rank() -> None:
    # source: the reply contract's list of meanings
    assert tuple(one.CODE for one in ALL) == MEANINGS


@pytest.mark.parametrize("one", ALL, ids=[one.CODE for one in ALL])
def test_every_meaning_has_examples_in_both_languages(one: object) -> None:
    examples: dict[str, tuple[str, ...]] = one.EXAMPLES  # type: ignore[attr-defined]  # a module of the Intent protocol
    assert all(len(set(examples[language])) >= LEAST_EXAMPLES for language in LANGUAGES)


@pytest.mark.parametrize(("code", "language", "text"), EXAMPLES)
def test_an_example_is_understood_as_its_meaning(code: str, language: str, text: str) -> None:
    out = read(text, READ_IN.get(code, "visit"))
    assert out.meanings[0] == code or (out.meanings[0] in ("accept", "symptom") and code in out.meanings), out.meanings
    assert out.language in (language, None)
