"""The lead time learned. Source of the estimate: Kaplan and Meier, J. Amer. Statist. Assoc. 53 (1958), by hand."""

from __future__ import annotations

import pytest

from followup.core.planning.lead_time import LONGEST_DAYS, SHORTEST_DAYS, Wait, learned_lead, median_wait


def _waits(come: list[float], waiting: list[float]) -> list[Wait]:
    return [*(Wait(days, True) for days in come), *(Wait(days, False) for days in waiting)]


def test_the_median_by_hand() -> None:
    """10 of 5 at risk: .8; 12 censored; 20 of 3: .533; 30 of 2: .267: so the median is 30, not the 20 of who came."""
    assert median_wait(_waits([10, 20, 30], [12, 40])) == 30
    assert median_wait(_waits([10, 20, 30], [])) == 20


def test_who_still_waits_makes_it_longer_and_half_must_have_come() -> None:
    assert median_wait(_waits([5, 6, 7, 8], [9, 9, 9, 9, 9])) is None
    assert median_wait([]) is None


def test_few_visits_leave_it_near_what_is_usual_and_many_decide() -> None:
    few, many = (learned_lead(_waits([10.0] * count, []), 21) for count in (2, 400))
    assert (few.days, few.kept, few.median) == (20, 2, 10.0)
    assert (many.days, many.kept, many.waiting) == (10, 400, 0)
    assert learned_lead([], 21).days == 21


@pytest.mark.parametrize(("days", "bound"), [(0.2, SHORTEST_DAYS), (500.0, LONGEST_DAYS)])
def test_it_stays_within_bounds(days: float, bound: int) -> None:
    assert learned_lead(_waits([days] * 5_000, []), 21).days == bound
