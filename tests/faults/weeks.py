"""Weeks of a simulated shop for tests: the demo's shop in memory, its troubles drawn from a seed, a line for each."""

from __future__ import annotations

import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import timedelta
from pathlib import Path

from followup.rehearsal import demo_shop
from followup.rehearsal.week.premises import Premises, copy_of_demo
from followup.rehearsal.week.promises import broken_promises, in_one_line
from followup.rehearsal.week.record import Recorded
from followup.rehearsal.week.shop_life import SimulatedShop
from followup.rehearsal.week.troubles import drawn_troubles

IN_MEMORY = Path("/dev/shm")


@contextmanager
def premises(template: Path) -> Iterator[Premises]:
    """A copy of the demo shop; in memory, because no power fails in these trials."""
    with tempfile.TemporaryDirectory(dir=IN_MEMORY if IN_MEMORY.is_dir() else None) as name:
        yield copy_of_demo(template, Path(name))


def live(template: Path, seed: int, days: float, troubled_days: int) -> Recorded:
    """What is recorded of so many days; prints a line."""
    begins_at = demo_shop.BEGINS_AT
    troubles = drawn_troubles(seed, begins_at, troubled_days)
    with premises(template) as here, SimulatedShop(here, seed, begins_at, troubles=troubles) as shop:
        shop.live(begins_at + timedelta(days=days))
        recorded = shop.recorded()
    broken = broken_promises(recorded)
    print(f"seed {seed}: {troubles.in_words()}; {in_one_line(recorded, broken)}")
    for one in broken:
        print(f"  {one.in_words}")
    return recorded
