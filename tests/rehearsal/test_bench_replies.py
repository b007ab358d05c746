"""The table of how right times are read: what counts as right; every reader stands in it or is said to be missing."""

from __future__ import annotations

from datetime import date

import pytest

from followup.rehearsal.bench.other_readers import OTHERS, is_installed
from followup.rehearsal.bench.replies import OURS, STEPS, Asked, Sentence, bench_replies, verdict

THURSDAY, FRIDAY = date(2026, 3, 5), date(2026, 3, 6)
AT_NINE = frozenset({540})
SENTENCES = {
    "nine": Sentence("thursday at 9", "day", THURSDAY, AT_NINE),
    "day": Sentence("thursday", "day", THURSDAY, frozenset()),
    "none": Sentence("i bought it on thursday", "visit", None, frozenset()),
}


@pytest.mark.parametrize(
    ("sentence", "found", "expected"),
    [
        ("nine", (THURSDAY, AT_NINE), "right"),
        ("nine", (THURSDAY, frozenset({600})), "wrong"),
        ("nine", (FRIDAY, AT_NINE), "wrong"),
        ("nine", None, "silent"),
        ("nine", (None, AT_NINE), "silent"),
        ("day", (THURSDAY, frozenset({0})), "right"),
        ("none", None, "right"),
        ("none", (THURSDAY, AT_NINE), "wrong"),
    ],
)
def test_a_time_where_there_is_none_is_worse_than_silence(
    sentence: str, found: tuple[date | None, frozenset[int]] | None, expected: str
) -> None:
    # source: the reply contract's scorer: wrong weighs more than silent, a time where there is none is false
    assert verdict(found, SENTENCES[sentence]) == expected


def test_every_reader_stands_in_the_table_or_is_said_to_be_missing() -> None:
    steps: list[int] = []
    figures = bench_replies(Asked(said=20, rounds=1, long=9, seed=1), steps.append)
    told = " | ".join(one.check for one in figures)
    assert all(name in told for name in (OURS, *OTHERS))
    assert [one.check for one in figures if one.found == "not installed"] == [
        name for name in OTHERS if not is_installed(name)
    ]
    # The speed hangs on the machine; the accuracy on what the tests of the reader hold.
    assert all(one.holds for one in figures if "right/wrong/silent" in one.check and one.holds is not None)
    assert sum(steps) == STEPS
    # A long text of each kind was read, and the command answered.
    assert "9 texts of 1,600 characters, the slowest" in told and "start of `followup understand`" in told
