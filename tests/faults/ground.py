"""Where trials take place: filled shops to copy, a database of each kind, and the parent of their processes."""

from __future__ import annotations

import os
import shutil
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from itertools import count
from pathlib import Path

import pytest
from sqlalchemy.engine import make_url

from followup.rehearsal.faults.judge import Verdict
from followup.rehearsal.faults.nursery import Nursery
from followup.rehearsal.faults.shop import BEGINS_AT, Shop, demo_address, fill_shop, kept_port
from followup.rehearsal.faults.trial import Plan, drawn_crash, drawn_plan, drawn_stop, run
from followup.rehearsal.faults.worker import Order
from tests.databases import PostgreSQL
from tests.faults.tally import add_to_tally

DRAWN = {"kill": drawn_plan, "crash": drawn_crash, "stop": drawn_stop}
# A crash may come before anything was planned; the others begin where texts are waiting.
BEFORE_PLANNING = "crash"
SEED = int(os.environ.get("FAULTS_SEED", "1"))


@dataclass
class Ground:
    """Runs trials one after the other; each has a folder and a database of its own."""

    folder: Path
    nursery: Nursery
    postgresql: PostgreSQL | None
    templates: dict[tuple[str, bool], str]

    def __post_init__(self) -> None:
        self._numbers = count()

    @contextmanager
    def shop(self, kind: str, *, is_planned: bool = True) -> Iterator[Shop]:
        """A copy of the filled shop on that kind of database."""
        folder = self.folder / f"trial-{next(self._numbers)}"
        folder.mkdir()
        template = self.templates[kind, is_planned]
        try:
            if kind == "sqlite":
                shutil.copy(template, folder / "shop.db")
                url = sqlite_url(folder)
            else:
                assert self.postgresql is not None
                url = self.postgresql.new_database(template)
            with kept_port() as port:
                yield Shop(folder, url, port)
            if kind != "sqlite" and self.postgresql is not None:
                self.postgresql.drop_database(url)
        finally:
            shutil.rmtree(folder, ignore_errors=True)

    def run(self, plan: Plan, kind: str, *, is_planned: bool = True) -> Verdict:
        """One trial."""
        with self.shop(kind, is_planned=is_planned) as shop:
            return run(plan, shop, self.nursery)

    def run_all(self, what: str, kind: str, numbers: range) -> list[Verdict]:
        """A trial for each number, drawn from the seed; fails with what was wrong and the seed that shows it again."""
        verdicts, wrong = [], []
        for number in numbers:
            plan = DRAWN[what](SEED * 100_000 + number)
            verdict = self.run(plan, kind, is_planned=what != BEFORE_PLANNING)
            add_to_tally(verdict)
            verdicts.append(verdict)
            if not verdict.is_clean:
                wrong.append(f"{what} on {kind}, {plan}: {verdict}")
        if wrong:
            pytest.fail("\n".join([f"seed {SEED}", *wrong]))
        return verdicts


def sqlite_url(folder: Path) -> str:
    """The database in a folder of a trial."""
    return f"sqlite+pysqlite:///{folder / 'shop.db'}"


def fill_templates(folder: Path) -> None:
    """Fill the two shops on SQLite."""
    for name in ("planned", "before planning"):
        own = folder / name
        own.mkdir()
        fill_shop(Shop(own, sqlite_url(own), 8000), is_planned=name == "planned")


def fill_postgresql(folder: Path, server: PostgreSQL) -> dict[tuple[str, bool], str]:
    """Fill the two shops on PostgreSQL; the names of their databases."""
    names = {}
    for is_planned in (True, False):
        own = folder / f"postgresql-{is_planned}"
        own.mkdir()
        url = server.new_database()
        fill_shop(Shop(own, url, 8000), is_planned=is_planned)
        names["postgresql", is_planned] = str(make_url(url).database)
    return names


def first_order(folder: Path, template: Path) -> Order:
    """A pass that loads what processes load at first use."""
    own = folder / "first"
    own.mkdir()
    shutil.copy(template / "shop.db", own / "shop.db")
    shop = Shop(own, sqlite_url(own), 8000)
    shop.set_clock(BEGINS_AT)
    arguments = ("work", "--until", BEGINS_AT.isoformat())
    return Order(arguments, shop.environment(demo_address(9)), str(own / "log"))
