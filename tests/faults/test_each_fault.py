"""Each way in which a provider may fail, by real processes over HTTP: one request an attempt, and none in doubt.

What each fault means: the provider's error pages (20429 is never processed and safe to retry, 20500 may have been),
and what its users report (accepted up to 26 s after the client gave up; lists that lag by 15 minutes).
"""

from __future__ import annotations

import time

import pytest

from followup.rehearsal.faults import fate
from followup.rehearsal.faults.judge import Verdict
from followup.rehearsal.faults.provider import Post, Provider
from followup.rehearsal.faults.trial import DUE_BY, Plan, run_with_posts
from followup.storage.rows import Row
from tests.faults.ground import Ground

TAKEN = ("silent", "reset", "closed", "500", "503", "half an answer", "HTML", "no sid")
REFUSED = ("429", "429 for 20 s", "21211", "21610", "400", "20003", "429", "429")


def _run(ground: Ground, plan: Plan) -> tuple[Verdict, dict[str, list[Post]], dict[str, Row]]:
    """The verdict, the requests and the rows, by the text's public id."""
    with ground.shop("sqlite") as shop:
        verdict, provider, texts = run_with_posts(plan, shop, ground.nursery)
    asked: dict[str, list[Post]] = {}
    for post in provider.posts:
        asked.setdefault(post.public_id, []).append(post)
    return verdict, asked, {row["public_id"]: row for row in texts}


def test_a_text_that_was_taken_is_asked_for_once_however_it_was_answered(ground: Ground) -> None:
    verdict, asked, rows = _run(ground, Plan(11, first=TAKEN))
    assert verdict.is_clean
    seen = {posts[0].fate.how for posts in asked.values()}
    assert seen >= set(TAKEN)
    for public_id, posts in asked.items():
        if posts[0].fate.how not in TAKEN:
            continue
        assert len(posts) == 1
        told = bool(posts[0].fate.reports) or not posts[0].fate.is_redacted
        assert rows[public_id]["state"] == ("sent" if told else "held")


def test_a_text_that_was_provably_refused_is_tried_again_unless_that_is_in_vain(ground: Ground) -> None:
    verdict, asked, rows = _run(ground, Plan(12, first=REFUSED, is_unreachable_first=True))
    assert verdict.is_clean
    assert {posts[0].fate.how for posts in asked.values()} >= set(REFUSED)
    for public_id, posts in asked.items():
        if posts[0].fate.how in fate.PERMANENT:
            assert (len(posts), rows[public_id]["state"]) == (1, "failed")
        elif posts[0].fate.is_proven_refusal:
            # By the next answer it may be in doubt, or its half hour may be over, but it was tried again.
            assert len(posts) > 1 or rows[public_id]["state"] == "dropped"
            assert sum(post.sid is not None for post in posts) <= 1


def test_what_is_taken_late_and_shown_later_is_never_sent_twice(
    ground: Ground, monkeypatch: pytest.MonkeyPatch
) -> None:
    took: list[float] = []
    report = Provider._report

    def timed(self: Provider, post: Post, status: str) -> None:
        began = time.monotonic()
        report(self, post, status)
        took.append(time.monotonic() - began)

    monkeypatch.setattr(Provider, "_report", timed)
    verdict, asked, rows = _run(ground, Plan(13, first=("late",)))
    assert verdict.is_clean
    # What is due later, an alert about what happened meanwhile, need not have come to its end.
    due = {public_id: posts for public_id, posts in asked.items() if rows[public_id]["due_at"] <= DUE_BY}
    late = {public_id: posts for public_id, posts in due.items() if posts[0].fate.how == "late"}
    assert len(late) >= 8
    assert all(len(posts) == 1 and rows[public_id]["state"] in ("sent", "held") for public_id, posts in late.items())
    assert any(posts[0].fate.lag for posts in late.values())
    # A report settles doubt in the transaction that it is answered after.
    assert took and max(took) < 2
