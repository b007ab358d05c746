"""Every way to say a time that we thought of is read as the contract says."""

from __future__ import annotations

from typing import Any

import pytest

from followup.rehearsal.bench.labeled_times import ENGLISH, SPANISH
from tests.replies import labeled_hours, more_times
from tests.replies.reading import avoided, read, times

ALL = ENGLISH + SPANISH + labeled_hours.ENGLISH + labeled_hours.SPANISH + more_times.ENGLISH


@pytest.mark.parametrize(("asked_in", "text", "expected"), ALL)
def test_a_time_is_read_as_it_is_meant(asked_in: str, text: str, expected: dict[str, Any]) -> None:
    # source: the reply contract, conventions for times; the sentences are ours
    out = read(text, asked_in)
    told = {"t": times(out), "a": avoided(out), "un": out.until}
    if out.meanings[0] in ("propose", "move", "decline", "accept") and (out.times or out.avoid or "q" in expected):
        told["q"] = out.question
    assert {key: value for key, value in told.items() if value} == expected
