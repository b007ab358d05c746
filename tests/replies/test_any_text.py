"""Whatever a phone sends gives a valid result, in bounded time, and the same one every time."""

from __future__ import annotations

import time
from datetime import datetime

from hypothesis import given, settings
from hypothesis import strategies as st

from followup.core.replies.contract import ReplyOut
from followup.core.replies.meaning import in_rank, is_for_a_person
from tests.replies.contract_cases import MEANINGS, TIMES
from tests.replies.reading import CONTEXTS, NOW, read

LONGEST = 1600
# The goal is 50 ms on an idle core; a shared machine gets room, so that only a runaway pattern fails.
SECONDS_AT_MOST = 1.0

TEXTS = [text for _, text, _, _ in MEANINGS + TIMES]
mixed = st.lists(st.sampled_from([*TEXTS, "?", "!", " ", "\n", "but", "pero", "no", "9", "👍"]), max_size=60).map(
    " ".join
)
any_text = st.one_of(st.text(max_size=LONGEST), mixed.map(lambda text: text[:LONGEST]))


def check(out: ReplyOut) -> None:
    """What the contract says of every result."""
    assert out.meanings == in_rank(out.meanings)
    assert out.handoff == is_for_a_person(out.meanings)
    assert ReplyOut.model_validate_json(out.model_dump_json()) == out
    for entry in (*out.times, *out.avoid):
        assert entry.end is None or entry.start.startswith("T") or entry.start <= entry.end
        if not entry.start.startswith("T"):
            assert datetime.fromisoformat(entry.start).date() >= NOW.date()
    if out.chosen:
        assert out.chosen in [entry.start for entry in out.times]


@settings(max_examples=150, deadline=None)
@given(text=any_text, context=st.sampled_from(sorted(CONTEXTS)))
def test_any_text_gives_a_valid_result_in_bounded_time(text: str, context: str) -> None:
    started = time.monotonic()
    out = read(text, context)
    assert time.monotonic() - started < SECONDS_AT_MOST
    check(out)
    assert read(text, context) == out


@settings(max_examples=150, deadline=None)
@given(text=st.sampled_from([text for text in TEXTS if text]), mark=st.sampled_from([".", "!", "!!", " ", "\n"]))
def test_case_and_closing_marks_change_nothing(text: str, mark: str) -> None:
    if text.endswith("?"):
        return
    plain = read(text)
    for other in (text.upper(), text.lower(), text + mark):
        told = read(other)
        assert (told.meanings, told.times, told.avoid, told.question) == (
            plain.meanings,
            plain.times,
            plain.avoid,
            plain.question,
        )


def test_long_runs_of_one_word_are_read_in_bounded_time() -> None:
    for word in (
        "stop ",
        "9 ",
        "or ",
        "tue ",
        "a ",
        "no ",
        "the ",
        "my brakes ",
        "1",
        "😀",
        "'",
        "\n",
        "3/4 ",
        "ok ",
        "and ",
        "super ",
    ):
        started = time.monotonic()
        check(read((word * LONGEST)[:LONGEST]))
        assert time.monotonic() - started < SECONDS_AT_MOST, word
