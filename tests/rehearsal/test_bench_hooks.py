"""The bench of the hooks runs both of them, accepts every text, and tells how long each answer took.

How long that may be is asked where the machine is quiet (`followup bench hooks`), not here.
"""

from __future__ import annotations

from followup.rehearsal.bench.hooks import BARE, OURS, Asked, bench_hooks


def test_both_hooks_take_every_text_at_every_rate() -> None:
    told: list[int] = []
    asked = Asked(seconds=1, saturating=100)
    figures = {one.check: one for one in bench_hooks(asked, told.append)}
    assert sum(told) == asked.steps
    for when in ("20/s alone", "200/s alone", "20/s beside a writer", "200/s beside a writer"):
        assert figures[f"{OURS}, {when}, not accepted"].holds
        for name in (OURS, BARE):
            assert {f"{name}, {when}, {what}" for what in ("p50", "p99", "max")} <= set(figures)
    assert {f"{OURS}, saturated", f"{BARE}, saturated", "saturated, ours of the bare one"} <= set(figures)
