"""Every sentence of the reply contract, as a case."""

from __future__ import annotations

from typing import Any

import pytest

from followup.core.replies.contract import ReplyOut
from followup.core.replies.meaning import HANDED_OVER
from tests.replies.contract_cases import MEANINGS, TIMES
from tests.replies.reading import avoided, read, times


def result(out: ReplyOut) -> dict[str, Any]:
    """What a result holds beside its meanings, without what is empty."""
    told = {
        "t": times(out),
        "a": avoided(out),
        "q": out.question,
        "ch": out.chosen,
        "un": out.until,
        "od": out.odometer.value if out.odometer else None,
        "car": out.car,
        "needs": list(out.needs),
    }
    return {key: value for key, value in told.items() if value}


@pytest.mark.parametrize(("asked_in", "text", "meanings", "expected"), MEANINGS + TIMES)
def test_a_sentence_of_the_contract(asked_in: str, text: str, meanings: str, expected: dict[str, Any]) -> None:
    out = read(text, asked_in)
    assert (" ".join(out.meanings), result(out)) == (meanings, expected)
    assert out.handoff == (not HANDED_OVER.isdisjoint(out.meanings))
