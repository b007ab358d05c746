"""Look whether the program works, for whoever watches it from outside: the database answers, and the clock ticks.

What cannot be written (a full disk, a database that is read-only or away) leaves no heartbeat either, so three missed
ticks tell of it. It changes nothing and tells nothing about the shop.
"""

from __future__ import annotations

import threading
from datetime import datetime, timedelta

from followup.storage import machine
from followup.storage.store import DATABASE_TROUBLE, Store

# So many ticks that did not run are trouble.
MISSED = 3
# A database that stands still answers nobody; whoever asks for the health does not wait for it.
ANSWERS_WITHIN_SECONDS = 4.0
DATABASE_IS_AWAY = "the database does not answer"
NEVER_TICKED = "the clock never ticked: run followup work"
CLOCK_STANDS = "the clock has missed its ticks: is followup work running, and can it write?"

_asking = threading.Lock()


def look_at_health(store: Store, now: datetime, every: dict[str, timedelta]) -> list[str]:
    """What is wrong, in words; [] where all is well. `every` says how often each tick runs that is looked at."""
    beats = _beats(store)
    if beats is None:
        return [DATABASE_IS_AWAY]
    if not all(name in beats for name in every):
        return [NEVER_TICKED]
    # A heartbeat ahead of now: the clock was moved back, and the next tick says so.
    is_late = any(abs(now - beats[name]) > MISSED * often for name, often in every.items())
    return [CLOCK_STANDS] if is_late else []


def _beats(store: Store) -> dict[str, datetime] | None:
    """The heartbeats; None where the database does not give them in time. One asks at a time: where one still waits,
    the next need not."""
    found: list[dict[str, datetime]] = []

    def ask() -> None:
        try:
            with store.read() as connection:
                found.append(machine.last_beats(connection))
        except DATABASE_TROUBLE:
            pass
        finally:
            _asking.release()

    if not _asking.acquire(timeout=ANSWERS_WITHIN_SECONDS):
        return None
    asking = threading.Thread(target=ask, name="health", daemon=True)
    asking.start()
    asking.join(ANSWERS_WITHIN_SECONDS)
    return found[0] if found else None
