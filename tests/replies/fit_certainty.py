"""Fit the weights of `core/replies/certainty.py` on labeled replies and show how well they hold: a development script.

    python -m tests.replies.fit_certainty

Fitted by maximum likelihood with a ridge penalty on the replies of `fitted_on`; near-duplicates (token-set ratio of
rapidfuzz from `NEAR` on) stay in one fold of the cross-validation. Prints the weights to paste, the reliability table
of the cross-validation and its expected calibration error (ten bins of equal width), whole and by set.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from rapidfuzz import fuzz, process
from scipy.optimize import minimize
from scipy.special import expit, log_expit

from followup.core.replies.certainty import LEAST, MOST, features
from followup.core.replies.combining import decide
from followup.core.replies.contract import ReplyIn
from followup.core.replies.plain import make_plain
from followup.core.replies.understand import read_situation, understand
from tests.replies.contract_cases import Case
from tests.replies.labeled_sets import KEPT, THUMBS, lines
from tests.replies.reading import CONTEXTS, NOW
from tests.replies.test_contract import result

RIDGE = 1.0
FOLDS = 10
NEAR = 85
BINS = 10
Numbers = NDArray[np.float64]


@dataclass(frozen=True)
class Sample:
    """One labeled reply, read: its text, its features by name, and whether what certainty promises is right."""

    text: str
    features: dict[str, float]
    is_right: bool


def read_samples(cases: Sequence[Case]) -> list[Sample]:
    """The labeled replies with the features of their reading; a lone emoji has a certainty of its own."""
    samples = []
    for asked, text, meanings, expected in cases:
        reply = ReplyIn(**{"text": text, "now": NOW, **CONTEXTS[asked]})
        plain = make_plain(text, None)
        if plain.is_emoji_only or not plain.text:
            continue
        now = read_situation(reply, plain)
        out = understand(reply)
        told = result(out)
        is_right = out.meanings[0] == meanings.split()[0] and all(
            told.get(key) == expected.get(key) for key in ("t", "ch", "od")
        )
        samples.append(Sample(text, features(now, decide(now)), is_right))
    return samples


def groups_of(samples: Sequence[Sample]) -> list[int]:
    """A number for each sample, the same for near-duplicates."""
    groups = list(range(len(samples)))
    texts = [one.text for one in samples]
    alike = process.cdist(texts, texts, scorer=fuzz.token_set_ratio, score_cutoff=NEAR, dtype=np.uint8)
    for one, other in zip(*np.nonzero(np.tril(alike, -1)), strict=True):
        old, new = groups[int(one)], groups[int(other)]
        groups = [new if group == old else group for group in groups]
    return groups


def fit(x: Numbers, y: Numbers) -> Numbers:
    """The weights of the penalized logistic likelihood; the first column, the constant, is not penalized."""

    def loss(w: Numbers) -> float:
        margin = x @ w
        return float(-(y * log_expit(margin) + (1 - y) * log_expit(-margin)).sum() + RIDGE * (w[1:] ** 2).sum() / 2)

    return np.asarray(minimize(loss, np.zeros(x.shape[1]), method="BFGS").x)


def chances(x: Numbers, w: Numbers) -> Numbers:
    """The chance of being right for each row, as the program says it."""
    return np.round(np.clip(expit(x @ w), LEAST, MOST), 2)


def cross_validated(x: Numbers, y: Numbers, groups: Sequence[int]) -> Numbers:
    """The chance of each row by weights fitted without its fold."""
    fold = np.array([sorted(set(groups)).index(group) % FOLDS for group in groups])
    said = np.zeros(len(y))
    for one in range(FOLDS):
        said[fold == one] = chances(x[fold == one], fit(x[fold != one], y[fold != one]))
    return said


def reliability(said: Numbers, y: Numbers) -> tuple[list[tuple[float, int, float, float]], float]:
    """Rows (from, how many, said on average, right) of ten equal bins, and the expected calibration error."""
    rows, error = [], 0.0
    for number in range(BINS):
        inside = (said >= number / BINS) & ((said < (number + 1) / BINS) | (number == BINS - 1))
        if inside.any():
            rows.append((number / BINS, int(inside.sum()), float(said[inside].mean()), float(y[inside].mean())))
            error += inside.sum() / len(y) * abs(said[inside].mean() - y[inside].mean())
    return rows, error


def show(title: str, said: Numbers, y: Numbers) -> None:
    """Print a reliability table."""
    rows, error = reliability(said, y)
    sure = said >= 0.9
    print(f"{title}: {len(y)} replies, {y.mean():.1%} right, expected calibration error {error:.3f}")
    print(f"  said 0.9 or more: {sure.sum()}, right {y[sure].mean():.1%}")
    for start, count, mean, right in rows:
        print(f"  {start:.1f}-{start + 0.1:.1f}  {count:4d}  said {mean:.2f}  right {right:.2f}")


def fitted_on() -> list[Sample]:
    """What the weights are fitted on: replies by which no list was mended and no likeness fitted."""
    return read_samples([case for name in (*KEPT.values(), *THUMBS.values()) for case in lines(name)])


def as_numbers(samples: Sequence[Sample], names: Sequence[str]) -> tuple[Numbers, Numbers]:
    """The features as rows in the order of their names, and 1 for each reading that is right."""
    x = np.array([[one.features[name] for name in names] for one in samples])
    return x, np.array([float(one.is_right) for one in samples])


def main() -> None:
    """Fit, check and print."""
    samples = fitted_on()
    names = list(samples[0].features)
    x, y = as_numbers(samples, names)
    print("WEIGHTS: dict[str, float] = {")
    for name, weight in zip(names, fit(x, y), strict=True):
        print(f'    "{name}": {weight:.2f},')
    print("}")
    said = cross_validated(x, y, groups_of(samples))
    show("cross-validated", said, y)
    start = 0
    for name in (*KEPT.values(), *THUMBS.values()):
        end = start + len(read_samples(lines(name)))
        show(f"of these, {name}", said[start:end], y[start:end])
        start = end


if __name__ == "__main__":
    main()
