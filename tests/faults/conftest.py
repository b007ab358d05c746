"""The ground for trials, made once for each process of tests."""

from __future__ import annotations

import tempfile
from collections.abc import Iterator
from pathlib import Path

import pytest

from followup.rehearsal.faults.nursery import Nursery
from followup.rehearsal.week.record import Recorded
from tests.databases import PostgreSQL
from tests.faults.ground import SEED, Ground, fill_postgresql, fill_templates, first_order
from tests.faults.weeks import live
from tests.workflows.demo import make_once

_IN_MEMORY = Path("/dev/shm")


@pytest.fixture(scope="session")
def filled_shops(shared_folder: Path) -> Path:
    """The shops to copy, on SQLite."""
    return make_once(shared_folder, "shops-of-trials", fill_templates)


@pytest.fixture(scope="session")
def ground(filled_shops: Path) -> Iterator[Ground]:
    """Trials on SQLite."""
    # A process that is killed loses nothing that it has written, so the disk need not be waited for.
    where = _IN_MEMORY if _IN_MEMORY.is_dir() else None
    with tempfile.TemporaryDirectory(prefix="trials", dir=where) as name:
        folder = Path(name)
        templates = {
            ("sqlite", True): str(filled_shops / "planned" / "shop.db"),
            ("sqlite", False): str(filled_shops / "before planning" / "shop.db"),
        }
        with Nursery(folder, first_order(folder, filled_shops / "planned")) as nursery:
            yield Ground(folder, nursery, None, templates)


@pytest.fixture(scope="session")
def both(ground: Ground, postgresql: PostgreSQL) -> Ground:
    """Trials on SQLite and on PostgreSQL."""
    ground.postgresql = postgresql
    ground.templates.update(fill_postgresql(ground.folder, postgresql))
    return ground


@pytest.fixture(scope="session")
def short_week(demo_template: Path) -> Recorded:
    """A day and the next morning, with all the troubles of a week on that day."""
    return live(demo_template, SEED, 1.1, 1)
