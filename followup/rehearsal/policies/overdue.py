"""Why something is past its action limit: what the shop knew and said of the car by then."""

from __future__ import annotations

import numpy as np

from followup.rehearsal.policies.rule import Told

WHY = ("never seen", "not told since the last visit", "told, more to come", "told in vain", "booked")


def why_overdue(told: Told, is_booked: np.ndarray) -> np.ndarray:
    """The number in `WHY` of each row, as it stands after the texts of a week.

    In vain: all tries of the reason that was told of last have been made, and nobody booked.
    """
    last = told.last.argmax(axis=1)
    tries = told.tries[np.arange(len(last)), last]
    states = [~np.isfinite(told.visited), is_booked, told.since_visit == 0, tries < told.rules.tries]
    return np.select(states, [0, 4, 1, 2], 3)
