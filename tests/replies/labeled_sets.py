"""Which labeled replies are for what, and the lines of `labeled_lines/`, written by us from the contract.

One reply a line, parted by tabs: the context, the meanings in their order of rank, the text (`\\n` stands for a new
line) and, where the whole answer is labeled, what else it holds as JSON (`contract_cases` tells the keys).
"""

from __future__ import annotations

import json
from functools import cache
from pathlib import Path

from tests.replies import (
    contract_cases,
    labeled,
    labeled_aside,
    labeled_fifth,
    labeled_fourth,
    labeled_second,
    labeled_second_spanish,
    labeled_third,
)
from tests.replies.contract_cases import Case

FOLDER = Path(__file__).parent / "labeled_lines"
KEPT = {"English": "english_kept", "Spanish": "spanish_kept"}
"""By these nothing was mended and nothing fitted but certainty: they judge."""
THUMBS = {"English": "english_thumbs", "Spanish": "spanish_thumbs"}
"""Noisy replies, written before the reader of that day was looked at; certainty alone is fitted on them."""
WHOLE = {
    "English": (
        "english_hard",
        "english_times",
        "english_mixed",
        "english_more",
        "english_daily",
        "english_first_sight",
        "english_people",
    ),
    "Spanish": (
        "spanish_times",
        "spanish_mixed",
        "spanish_more",
        "spanish_daily",
        "spanish_first_sight",
        "spanish_people",
    ),
}
MEANINGS_ONLY = {
    "English": ("english_first", "english_second", "english_third", "english_fourth", "english_alike"),
    "Spanish": ("spanish_first", "spanish_second", "spanish_third", "spanish_fourth", "spanish_alike"),
}
EARLIER: list[Case] = [
    *contract_cases.MEANINGS, *contract_cases.TIMES,
    *labeled.ENGLISH, *labeled.SPANISH, *labeled_second.ENGLISH, *labeled_second_spanish.SPANISH,
    *labeled_third.ENGLISH, *labeled_third.SPANISH, *labeled_fourth.ENGLISH, *labeled_fourth.SPANISH,
    *labeled_aside.ENGLISH, *labeled_aside.SPANISH, *labeled_fifth.ENGLISH, *labeled_fifth.SPANISH,
]  # fmt: skip


@cache
def lines(name: str) -> list[Case]:
    """The replies of one file of `labeled_lines/`; what else they hold is empty where it is not labeled."""
    cases: list[Case] = []
    for line in (FOLDER / f"{name}.tsv").read_text(encoding="utf-8").splitlines():
        asked, meanings, text, *rest = line.split("\t")
        cases.append((asked, text.replace("\\n", "\n"), meanings, json.loads(rest[0]) if rest else {}))
    return cases


def later() -> list[Case]:
    """The replies of `labeled_lines/` that are not kept for judging, nor written twice by chance."""
    named = [name for group in (WHOLE, MEANINGS_ONLY) for names in group.values() for name in names]
    kept = {text.lower() for name in KEPT.values() for _, text, _, _ in lines(name)}
    return [case for name in named for case in lines(name) if case[1].lower() not in kept]
