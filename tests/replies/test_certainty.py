"""Certainty means what it says: on labeled replies that no word list was mended by, in cross-validation.

The goals: of replies said to be at least 0.9 sure 95 % right, expected calibration error at most 0.05.
"""

from __future__ import annotations

import numpy as np
import pytest

from followup.core.replies.certainty import WEIGHTS
from tests.replies.fit_certainty import as_numbers, chances, cross_validated, fit, fitted_on, groups_of, reliability
from tests.replies.reading import read

LARGEST_ERROR = 0.05


def test_the_weights_are_those_that_the_script_fits() -> None:
    x, y = as_numbers(fitted_on(), list(WEIGHTS))
    said, fitted = chances(x, np.array(list(WEIGHTS.values()))), chances(x, fit(x, y))
    # The word lists grow between two fits; the weights are fitted anew where it shows.
    assert float(np.abs(said - fitted).mean()) < 0.03


def test_certainty_holds_in_cross_validation() -> None:
    samples = fitted_on()
    x, y = as_numbers(samples, list(WEIGHTS))
    said = cross_validated(x, y, groups_of(samples))
    assert reliability(said, y)[1] <= LARGEST_ERROR
    assert y[said >= 0.9].mean() >= 0.95


@pytest.mark.parametrize("text", ["yes", "no", "friday at 10", "si", "el martes a las 9", "stop", "how much"])
def test_a_plain_answer_is_sure_enough_to_act_on(text: str) -> None:
    assert read(text).certainty >= 0.85


@pytest.mark.parametrize("text", ["qwer zxcv", "👍", "mumble grumble whatsit"])
def test_what_can_hardly_be_told_is_unsure_or_read_by_a_person(text: str) -> None:
    out = read(text)
    assert out.certainty < 0.7 or out.handoff


def test_every_weight_has_its_feature() -> None:
    assert set(WEIGHTS) == set(fitted_on()[0].features)
