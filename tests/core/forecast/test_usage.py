"""Distance a day: the kriging formulas against reference numbers, the prior against published annual miles."""

import numpy as np
import pytest

from followup.core.forecast.priors import UsagePrior
from followup.core.forecast.usage import (
    HORIZONS,
    MOST_INTERVALS,
    OdometerIntervals,
    UsageAhead,
    age_offset,
    edge_correlation,
    mean_correlation,
    predict_usage,
)

# Source: worked out by a program apart from this one when the model was designed: intervals (begin, end, log mean rate
# less age offset, first), mu 3.36, predicted from day 1,400; log rate and variance by horizon.
INTERVALS = [(0.0, 1000.0, 3.4, True), (1000.0, 1180.0, 3.7, False), (1180.0, 1400.0, 3.2, False)]
PREDICTED = {
    30: (3.1755817299298563, 0.062467725790071205),
    90: (3.189843349670683, 0.0437562582153776),
    200: (3.212340740705498, 0.0423062267793102),
    400: (3.2437417524975074, 0.04439085309183405),
    800: (3.271024269721997, 0.0452330839444654),
}
# Source: DOT HS 809 952 (NHTSA 2006), annual miles of cars by age (rows from memory, cross-checked by their sums).
NHTSA_CARS = {1: 14231, 2: 13961, 3: 13669, 4: 13357, 5: 13028, 6: 12683, 7: 12325, 8: 11956, 9: 11578, 10: 11193,
              11: 10804, 12: 10413, 13: 10022, 14: 9633, 15: 9249, 16: 8871, 17: 8502, 18: 8144, 19: 7799, 20: 7469,
              21: 7157, 22: 6866, 23: 6596, 24: 6350, 25: 6131}  # fmt: skip
# Share of cars that are still on the road at that age; miles x share sum up to the published 152,137 of a lifetime.
NHTSA_SURVIVING = (0.99, 0.9831, 0.9731, 0.9593, 0.9413, 0.9188, 0.8918, 0.8604, 0.8252, 0.7866, 0.717, 0.6125, 0.5094,
                   0.4142, 0.3308, 0.2604, 0.2028, 0.1565, 0.12, 0.0916, 0.0696, 0.0527, 0.0399, 0.0301,
                   0.0227)  # fmt: skip


def padded(rows: list[tuple[float, float, float, bool]]) -> OdometerIntervals:
    """Intervals of one car, padded to six."""
    table = np.zeros((1, MOST_INTERVALS, 4))
    there = np.zeros((1, MOST_INTERVALS), dtype=bool)
    if rows:
        table[0, : len(rows)] = rows
    there[0, : len(rows)] = True
    return OdometerIntervals(table[:, :, 0], table[:, :, 1], table[:, :, 2], table[:, :, 3] > 0, there)


def ahead(rows: list[tuple[float, float, float, bool]], origin: float, prior: UsagePrior) -> UsageAhead:
    """The prediction of one car born on day 0."""
    return predict_usage(padded(rows), np.array([origin]), np.array([origin / 365.25]), prior)


def test_prediction_agrees_to_a_millionth() -> None:
    found = ahead(INTERVALS, 1400.0, UsagePrior(log_miles_per_day=3.36))
    for place, horizon in enumerate(HORIZONS[:5]):
        log_rate, variance = PREDICTED[int(horizon)]
        assert found.log_rate[0, place] == pytest.approx(log_rate, abs=1e-6)
        assert found.variance[0, place] == pytest.approx(variance, abs=1e-6)


def test_correlations_of_the_wander() -> None:
    lengths = np.array([0.01, 0.5, 1.0, 5.0])
    # Same source as PREDICTED.
    assert mean_correlation(lengths) == pytest.approx([0.99667498, 0.85224528, 0.73575888, 0.32053904], abs=1e-8)
    assert edge_correlation(lengths) == pytest.approx([0.99501663, 0.78693868, 0.63212056, 0.19865241], abs=1e-8)
    assert mean_correlation(np.array([1e-6]))[0] == pytest.approx(1 - 1e-6 / 3, abs=1e-12)


def test_prediction_is_that_of_a_plain_gaussian_conditional() -> None:
    """The same numbers from one joint covariance of 4,000 daily steps, conditioned by numpy alone."""
    prior = UsagePrior(log_miles_per_day=3.36, noise_days=0.0, first_use_error_days=0.0)
    step = 5.0
    at = np.arange(step / 2, 1800, step)
    joint = prior.between_drivers**2 + prior.within_driver**2 * np.exp(
        -np.abs(at[:, None] - at[None, :]) / prior.wander_days
    )
    spans = [(begin, end) for begin, end, _, _ in INTERVALS] + [(1400.0, 1800.0)]
    means = np.array([((at > begin) & (at < end)) / ((at > begin) & (at < end)).sum() for begin, end in spans])
    whole = means @ joint @ means.T
    data, cross = whole[:3, :3] + 1e-4 * np.eye(3), whole[3, :3]
    seen = np.array([log_rate for _, _, log_rate, _ in INTERVALS]) - 3.36
    expected = 3.36 + cross @ np.linalg.solve(data, seen)
    found = ahead(INTERVALS, 1400.0, prior)
    place = list(HORIZONS).index(400.0)
    assert found.log_rate[0, place] == pytest.approx(expected, abs=2e-3)
    assert found.variance[0, place] == pytest.approx(whole[3, 3] - cross @ np.linalg.solve(data, cross), abs=2e-3)


def test_table_of_nhtsa_was_typed_rightly() -> None:
    total = sum(miles * share for miles, share in zip(NHTSA_CARS.values(), NHTSA_SURVIVING, strict=True))
    # The sum of its rounded rows is 152,143.
    assert total == pytest.approx(152_137, abs=10)


@pytest.mark.parametrize("age", [age for age in NHTSA_CARS if age <= 20])
def test_usual_annual_miles_lie_near_those_of_nhtsa(age: int) -> None:
    """Within 25 %: our mean (median x exp(spread^2 / 2)) follows the survey of 2017, NHTSA's rows the one of 2001."""
    prior = UsagePrior()
    offset = age_offset(np.array([age - 1.0]), np.array([float(age)]), prior)[0]
    spread = prior.between_drivers**2 + prior.within_driver**2
    ours = np.exp(prior.log_miles_per_day + offset + spread / 2) * 365.25
    assert 0.75 <= ours / NHTSA_CARS[age] <= 1.25


def test_without_an_odometer_the_prior_speaks() -> None:
    prior = UsagePrior()
    found = ahead([], 400.0, prior)
    assert np.exp(found.log_rate[0, 0]) * 365.25 == pytest.approx(10_500, rel=1e-6)
    assert found.variance[0, 0] > prior.between_drivers**2


def test_reading_between_horizons_keeps_their_values() -> None:
    found = ahead(INTERVALS, 1400.0, UsagePrior())
    log_rate, variance = found.at(np.array([0, 0]), np.array([200.0, 10_000.0]))
    assert log_rate[0] == pytest.approx(found.log_rate[0, 2])
    assert variance[1] == pytest.approx(found.variance[0, -1])
