"""What the present readings of a car show side by side: uneven wear, and a rotation that is due because of it.

Nothing here is kept: it is worked out from the readings and the work as they stand, so that it goes when the work is
done or the next reading no longer shows it. It says what was measured and what the trade does about it, never why.
"""

from __future__ import annotations

from followup.core.advisories import words
from followup.core.advisories.bounds import BOUND_BY_CODE, BOUNDS, Bound
from followup.core.advisories.find import Advisory, advisories_of

__all__ = ["BOUNDS", "BOUND_BY_CODE", "Advisory", "Bound", "advisories_of", "words"]
