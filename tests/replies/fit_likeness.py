"""Fit the weights of `core/replies/likeness.py` on our labeled replies: a development script.

    python -m tests.replies.fit_likeness            writes followup/core/replies/likeness_weights/
    python -m tests.replies.fit_likeness --check    cross-validates only

For each meaning a linear classifier with squared hinge loss and a ridge penalty (a linear support vector machine):
replies that hold the meaning against all others. Replies that certainty is fitted on are never among them.
"""

from __future__ import annotations

import sys
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from numpy.typing import NDArray
from scipy.sparse import csr_matrix

from followup.core.replies import likeness
from followup.core.replies.contract import ReplyIn
from followup.core.replies.intents import ALL
from followup.core.replies.meaning import MEANINGS
from followup.core.replies.plain import make_plain
from followup.core.replies.said import Said
from followup.core.replies.understand import read_situation
from tests.replies import faults_and_stops as first_faults
from tests.replies import faults_and_stops_second as second_faults
from tests.replies import labeled_sets, test_dangerous
from tests.replies.reading import CONTEXTS, NOW
from tests.replies.test_meanings import READ_IN
from tests.replies.test_stop_and_symptom import NO_SYMPTOMS

COST = 3.0
PROVEN = 5.0
"""How much a reply counts that the tests hold one by one."""
OF_THREE = PROVEN / 2
"""The same for one that stands in three contexts."""
SEEN_AT_LEAST = 5
LEAST_WEIGHT = 25
"""Hundredths below which a weight is left out; more where a file would be longer than a file may be."""
MOST_LINES = 390
FOLDS = 4
MOST_STEPS = 100
FLAT = 1e-4
"""The share of the first slope at which a fit has arrived: far less than the hundredths in which weights stand."""
SHORTEST_STEP = 1e-6
WIDTH = 118
FOLDER = Path(likeness.__file__).parent / "likeness_weights"
Numbers = NDArray[np.float64]


def said_of(asked: str, text: str) -> Said | None:
    """A labeled reply as the meanings see it; None where it has no words."""
    plain = make_plain(text, None)
    if not plain.text:
        return None
    return read_situation(ReplyIn(**{"text": text, "now": NOW, **CONTEXTS[asked]}), plain).said


@dataclass(frozen=True)
class Lesson:
    """A reply to learn from: its meanings, how much it counts, and of which meanings it is known (empty: of all)."""

    said: Said
    meanings: frozenset[str]
    weight: float
    known: frozenset[str] = frozenset()


def told() -> Iterator[tuple[str, str, str, float, str]]:
    """Context, text, meanings, weight and the meanings that are known of each reply to learn from."""
    for asked, text, meanings, _ in labeled_sets.EARLIER:
        yield asked, text, meanings, PROVEN, ""
    for asked, text, code in test_dangerous.LEADING:
        yield asked, text, code, PROVEN, ""
    for one in ALL:
        for text in (text for lines in one.EXAMPLES.values() for text in lines):
            yield READ_IN.get(one.CODE, "visit"), text, one.CODE, PROVEN, ""
    for asked, text, meanings, _ in labeled_sets.later():
        yield asked, text, meanings, 1.0, ""
    for asked in ("visit", "confirm", "after_visit"):
        for text in (*first_faults.FAULTS, *second_faults.FAULTS):
            yield asked, text, "symptom", OF_THREE, "symptom"
        for text in (*first_faults.STOPS, *second_faults.STOPS):
            yield asked, text, "stop", OF_THREE, "stop"
        for text in (*first_faults.NO_STOPS, *second_faults.NO_STOPS):
            yield asked, text, "", OF_THREE, "stop"
        for text in (*first_faults.NO_FAULTS, *second_faults.NO_FAULTS, *NO_SYMPTOMS):
            yield asked, text, "", OF_THREE, "symptom"
        for text in test_dangerous.NEITHER_STOP_NOR_SYMPTOM:
            yield asked, text, "", OF_THREE, "stop symptom"


def lessons() -> list[Lesson]:
    """All replies to learn from."""
    found = []
    for asked, text, meanings, weight, known in told():
        said = said_of(asked, text)
        if said is not None:
            found.append(Lesson(said, frozenset(meanings.split()), weight, frozenset(known.split())))
    return found


def matrix(rows: Sequence[dict[str, float]], columns: dict[str, int]) -> csr_matrix:
    """The signs as a sparse matrix with a last column of ones."""
    data, indices, starts = [], [], [0]
    for row in rows:
        for sign, share in row.items():
            if sign in columns:
                indices.append(columns[sign])
                data.append(share)
        indices.append(len(columns))
        data.append(1.0)
        starts.append(len(indices))
    return csr_matrix((data, indices, starts), shape=(len(rows), len(columns) + 1))


def fit(x: csr_matrix, y: Numbers, counts: Numbers, cost: float = COST) -> Numbers:
    """The weights of all meanings, a row each.

    `y` and `counts` are replies x meanings: 1 where a reply holds a meaning, else -1; how much that counts.
    The meanings are independent of each other and each loss has one lowest place, so that what is found does not depend
    on the way there.
    """
    return np.array([_fit_one(x, y[:, one], cost * counts[:, one]) for one in range(y.shape[1])])


def _fit_one(x: csr_matrix, y: Numbers, each: Numbers) -> Numbers:
    """One meaning by Newton's method, its steps by conjugate gradients, until the slope has all but vanished.

    The way of trust region Newton for linear classifiers (Lin, Weng, Keerthi 2008), steps halved where they go too far.
    """
    w = np.zeros(x.shape[1])
    margin = np.zeros(x.shape[0])
    first_slope = size = 0.0
    for _ in range(MOST_STEPS):
        slack = np.maximum(1 - y * margin, 0)
        slope = w - 2 * (x.T @ (each * y * slack))
        size = float(np.sqrt(slope @ slope))
        first_slope = first_slope or size
        if size <= FLAT * first_slope:
            return w
        active = np.flatnonzero(slack > 0)
        part, worth = x[active], 2 * each[active]
        turned = part.T.tocsr()
        step = _conjugate(part, turned, worth, -slope, 0.1 * size)
        along = x @ step
        loss, share = 0.5 * (w @ w) + (each * slack * slack).sum(), 1.0
        while share > SHORTEST_STEP:
            new = w + share * step
            left = np.maximum(1 - y * (margin + share * along), 0)
            if 0.5 * (new @ new) + (each * left * left).sum() <= loss + 1e-4 * share * (slope @ step):
                break
            share /= 2
        w, margin = w + share * step, margin + share * along
    raise NoLowestPlaceFound(size / first_slope)


class NoLowestPlaceFound(Exception):
    """The slope has not vanished within the steps allowed; the share of the first slope that is left."""


def _conjugate(part: csr_matrix, turned: csr_matrix, worth: Numbers, wanted: Numbers, close: float) -> Numbers:
    """The step whose image under the second derivative is `wanted`, up to `close`."""
    step, left = np.zeros_like(wanted), wanted.copy()
    way, size = left.copy(), float(left @ left)
    for _ in range(MOST_STEPS):
        if size <= close * close:
            break
        image = way + turned @ (worth * (part @ way))
        share = size / float(way @ image)
        step += share * way
        left -= share * image
        size, before = float(left @ left), size
        way = left + size / before * way
    return step


def vocabulary(rows: Sequence[dict[str, float]]) -> dict[str, int]:
    """The signs seen often enough, numbered."""
    seen: dict[str, int] = {}
    for row in rows:
        for sign in row:
            seen[sign] = seen.get(sign, 0) + 1
    return {sign: number for number, sign in enumerate(sorted(one for one in seen if seen[one] >= SEEN_AT_LEAST))}


def fit_all(rows: Sequence[dict[str, float]], lessons: Sequence[Lesson]) -> tuple[dict[str, int], Numbers]:
    """The vocabulary and a row of weights for each meaning, in the order of rank."""
    columns = vocabulary(rows)
    held = np.array([[1.0 if code in one.meanings else -1.0 for code in MEANINGS] for one in lessons])
    counts = np.array([[one.weight * (not one.known or code in one.known) for code in MEANINGS] for one in lessons])
    return columns, fit(matrix(rows, columns), held, counts)


def cross_validate(rows: Sequence[dict[str, float]], lessons: Sequence[Lesson]) -> float:
    """The share of replies whose highest score, fitted without their fold, is one of their meanings."""
    fold = np.random.default_rng(1).integers(FOLDS, size=len(rows))
    right = []
    for one in range(FOLDS):
        inside = [number for number in range(len(rows)) if fold[number] == one and not lessons[number].known]
        outside = [number for number in range(len(rows)) if fold[number] != one]
        columns, weights = fit_all([rows[number] for number in outside], [lessons[number] for number in outside])
        best = (matrix([rows[number] for number in inside], columns) @ weights.T).argmax(1)
        right += [MEANINGS[int(code)] in lessons[number].meanings for code, number in zip(best, inside, strict=True)]
    return float(np.mean(right))


def module_text(code: str, columns: dict[str, int], weights: Numbers) -> str:
    """The source of one file of weights."""
    hundredths = np.rint(weights / likeness.AS_WEIGHT).astype(int)
    least, lines = LEAST_WEIGHT, _lines(hundredths, columns, LEAST_WEIGHT)
    while len(lines) > MOST_LINES:
        least += 1
        lines = _lines(hundredths, columns, least)
    body = "\n".join(line.rstrip() for line in lines)
    return (
        f'"""What speaks for and against `{code}`, in hundredths: made by `python -m tests.replies.fit_likeness`."""'
        "\n\n"
        f'CODE = "{code}"\nBIAS = {hundredths[-1]}\nWEIGHTS = """\\\n{body}\n"""\n'
    )


def _lines(hundredths: NDArray[np.int_], columns: dict[str, int], least: int) -> list[str]:
    lines = [""]
    for sign, number in columns.items():
        pair = f"{sign}:{hundredths[number]}"
        if abs(hundredths[number]) < least:
            continue
        if len(lines[-1]) + len(pair) + 1 > WIDTH:
            lines.append("")
        lines[-1] += f"{pair} "
    return lines


def main(arguments: Sequence[str]) -> None:
    """Fit and write, or check only."""
    learned = lessons()
    rows = [likeness.weighed(one.said) for one in learned]
    if "--check" in arguments:
        print(
            f"{len(rows)} replies, cross-validated: {cross_validate(rows, learned):.1%} have their highest score right"
        )
        return
    columns, weights = fit_all(rows, learned)
    for code, row in zip(MEANINGS, weights, strict=True):
        (FOLDER / f"{code}.py").write_text(module_text(code, columns, row), encoding="utf-8")
    print(f"wrote {len(MEANINGS)} files of {len(columns)} signs")


if __name__ == "__main__":
    main(sys.argv[1:])
