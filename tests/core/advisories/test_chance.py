"""The chance that a true difference exceeds its bound: against scipy.stats, a simulation, and what it lets through."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from followup.core.advisories import advisories_of
from followup.core.advisories.find import lowest_at
from followup.core.advisories.present import chance_beyond, present, variance_of
from followup.core.shop import ShopRules
from tests.core.advisories.cars import CAR, READ_ON, TODAY, found, pad, tread

SEED = 20261125


@given(st.floats(0, 12), st.floats(0.5, 4), st.floats(0.01, 4))
def test_the_closed_form_is_the_normal_one(difference: float, bound: float, variance: float) -> None:
    expected = stats.norm.sf(bound, loc=difference, scale=variance**0.5)
    assert chance_beyond(difference, bound, variance) == pytest.approx(expected, abs=1e-12)


@pytest.mark.parametrize(("difference", "expected"), [(1, 0.127), (2, 0.5), (3, 0.873), (4, 0.989)])
def test_with_whole_32nds(difference: int, expected: float) -> None:
    """Two readings of sd .55/32 by hand on a gauge of whole marks: variance 2 (.55^2 + 1/12), sd .878 (by hand)."""
    (spot,) = present("tire_tread", [tread("front_left", 6, 6 - difference)], (), TODAY)
    variance = 2 * variance_of(CAR, spot, "32nds")
    assert variance == pytest.approx(2 * (0.55**2 + 1 / 12))
    assert chance_beyond(difference, 2, variance) == pytest.approx(expected, abs=1e-3)


def test_the_chance_is_what_a_simulation_finds() -> None:
    """Two true depths that may be anywhere, read with the hand's error on whole marks: among pairs that read 3/32
    apart, how often the true difference is over 2/32. Seed 20261125."""
    dice = np.random.default_rng(SEED)
    true = dice.uniform(2, 14, size=(4_000_000, 2))
    read = np.round(true + dice.normal(0, 0.55, size=true.shape))
    for difference, expected in ((2, 0.5), (3, 0.873)):
        # Well inside the depths there are, so that nothing is cut off at their ends.
        apart = (read[:, 0] - read[:, 1] == difference) & (abs(read.mean(axis=1) - 8) < 2)
        share = float(np.mean((true[:, 0] - true[:, 1])[apart] > 2))
        assert share == pytest.approx(expected, abs=0.01)
        assert chance_beyond(difference, 2, 2 * (0.55**2 + 1 / 12)) == pytest.approx(share, abs=0.01)


def test_even_tires_are_seldom_called_uneven() -> None:
    """Three grooves of one true depth: the widest of three differences is larger than a single one, and still fewer
    than 2 in 100 even tires are spoken of; of those worn 4/32 to one side, more than 9 in 10. Seed 20261125."""
    dice = np.random.default_rng(SEED)
    depth = dice.uniform(4, 10, size=(4_000, 1))
    hand = dice.normal(0, 0.55, size=(4_000, 3))
    even = np.round(depth + hand)
    worn = np.round(depth + hand - np.array([0.0, 2.0, 4.0])).clip(0)

    def spoken_of(tires: np.ndarray) -> float:
        rules = ShopRules()
        count = sum(
            bool(advisories_of(CAR, [tread("front_left", *map(float, tire))], (), rules, TODAY)) for tire in tires
        )
        return count / len(tires)

    assert spoken_of(even) < 0.02
    assert spoken_of(worn) > 0.9


def test_the_gauge_that_was_used_counts() -> None:
    """Numbers between the usual marks were read with a finer gauge: .1 in place of 1 (32nds), .5 (mm of a pad)."""

    def variance(reading: object) -> float:
        item = reading.entered.item
        (spot,) = present(item, [reading], (), TODAY)
        return variance_of(CAR, spot, spot.unit)

    assert variance(tread("front_left", 6)) == pytest.approx(0.55**2 + 1 / 12)
    assert variance(tread("front_left", 6.3)) == pytest.approx(0.55**2 + 0.01 / 12)
    assert variance(pad("front_left", value=6.5)) == pytest.approx(0.5**2 + 0.25 / 12)
    assert variance(pad("front_left", value=6.4)) == pytest.approx(0.5**2 + 0.01 / 12)
    in_mm = (0.55 * 25.4 / 32) ** 2 + 0.01 / 12
    assert variance(tread("front_left", 4.8, unit="mm")) == pytest.approx(in_mm)


@pytest.mark.parametrize(
    ("grooves", "where"),
    [
        ((6, 6, 3), "inner edge"), ((3, 6, 6), "outer edge"), ((6, 3, 3), "inner edge"), ((3, 5, 6), "outer edge"),
        ((6, 3, 6), "center"), ((7, 3, 6), "center"), ((3, 6, 3), "both edges"), ((4, 7, 5), "both edges"),
        ((6, 3), "one side"), ((6, 6, 6, 3), "inner edge"), ((6, 3, 3, 6), "center"),
    ],
)  # fmt: skip
def test_where_a_tire_is_lower(grooves: tuple[float, ...], where: str) -> None:
    """From the outer to the inner edge, as the sheet asks for them."""
    assert lowest_at(grooves) == where
    (one,) = found(tread("front_left", *grooves))
    assert one.lowest_at == where
    assert one.on == READ_ON
