"""Named points on the way of a text, at which a trial may end or stop a process; otherwise they do nothing.

Only `followup/rehearsal/faults` listens. A crash between any two of them must lose no text and send none twice.
"""

from __future__ import annotations

from collections.abc import Callable

IN_A_TRANSACTION = (
    "expired released",
    "claim written",
    "rendered",
    "in flight written",
    "outcome written",
    "look written",
)
"""Nothing of it is kept yet; a process that stops there keeps others from writing."""
BETWEEN = ("claim kept", "in flight kept", "handing over", "answered", "outcome kept", "looked")
"""What came before is kept, what follows has not begun."""
POINTS = IN_A_TRANSACTION + BETWEEN

MOVING = (
    "move begun", "tables made", "rows copied", "target kept", "closing written", "closed", "arrival written",
    "arrived",
)  # fmt: skip
"""On the way of a database to its new place."""

MIGRATING = ("version written", "migrated")
"""On the way of a database to what this version needs: after each migration, and when all is kept."""

_listener: Callable[[str], None] | None = None


def reached(point: str) -> None:
    """Say that this process is at a point of `POINTS`, `MOVING` or `MIGRATING`."""
    if _listener is not None:
        _listener(point)


def listen(listener: Callable[[str], None] | None) -> None:
    """Have a trial told of every point; None ends it."""
    global _listener
    _listener = listener
