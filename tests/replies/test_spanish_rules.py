"""Spanish replies, each for a rule of grammar, are read as the reply contract says."""

from __future__ import annotations

from typing import Any

import pytest

from tests.replies import spanish_rules as first
from tests.replies import spanish_rules_second as second
from tests.replies.reading import read
from tests.replies.test_contract import result
from tests.replies.test_labeled import is_same

ALL = first.TIMES + first.OFFERS + first.MEANINGS + first.SAID + second.TIMES + second.OFFERS + second.MEANINGS


@pytest.mark.parametrize(("asked_in", "text", "meanings", "expected"), ALL)
def test_a_spanish_reply_is_read_as_it_is_meant(
    asked_in: str, text: str, meanings: str, expected: dict[str, Any]
) -> None:
    out = read(text, asked_in)
    assert is_same(out, meanings, expected), (out.meanings, result(out))
