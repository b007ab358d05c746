"""Our own labeled replies: the whole answer, in both languages."""

from __future__ import annotations

from typing import Any

import pytest

from tests.replies.labeled import ENGLISH, SPANISH
from tests.replies.reading import read
from tests.replies.test_contract import result


@pytest.mark.parametrize(("asked_in", "text", "meanings", "expected"), ENGLISH + SPANISH)
def test_a_labeled_reply(asked_in: str, text: str, meanings: str, expected: dict[str, Any]) -> None:
    out = read(text, asked_in)
    assert (" ".join(out.meanings), result(out)) == (meanings, expected)
