"""The bench of sending runs, sends every text, and sees a pace that is not kept."""

from __future__ import annotations

import pytest

from followup.rehearsal.bench import sending
from followup.rehearsal.bench.sending import Asked, bench_sending
from followup.storage import pace


def _paced(monkeypatch: pytest.MonkeyPatch) -> list[bool | None]:
    """Whether the number's rate held, for each rate."""
    monkeypatch.setattr(sending, "_PACED", {20.0: 12, 1.0: 2})
    told: list[int] = []
    asked = Asked(16)
    figures = bench_sending(asked, told.append)
    assert sum(told) == asked.steps
    assert any("16 at once, no latency" in one.check for one in figures)
    assert "left out" in figures[-1].found
    return [one.holds for one in figures if "most in a second" in one.check]


def test_it_sends_them_all_at_the_numbers_pace(monkeypatch: pytest.MonkeyPatch) -> None:
    assert _paced(monkeypatch) == [True, True]


def test_it_sees_a_number_that_is_faster_than_it_may(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(pace, "take", lambda *_arguments: True)
    assert _paced(monkeypatch) == [False, False]
