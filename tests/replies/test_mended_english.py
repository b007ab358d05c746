"""English replies, one or more for every rule of the grammar: the whole answer."""

from __future__ import annotations

from typing import Any

import pytest

from tests.replies.mended_english import ENGLISH
from tests.replies.mended_english_second import ENGLISH as SECOND
from tests.replies.mended_english_third import ENGLISH as THIRD
from tests.replies.reading import read
from tests.replies.test_contract import result


@pytest.mark.parametrize(("asked_in", "text", "meanings", "expected"), ENGLISH + SECOND + THIRD)
def test_a_reply_is_read_as_it_is_meant(asked_in: str, text: str, meanings: str, expected: dict[str, Any]) -> None:
    out = read(text, asked_in)
    assert (" ".join(out.meanings), result(out)) == (meanings, expected)
