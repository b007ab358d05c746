"""The shop's own priors: learned at night where there is news, kept in versions, used, set back by a press."""

from __future__ import annotations

import json
import shutil
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from click.testing import CliRunner
from sqlalchemy import select

from followup import scheduler
from followup.cli import main
from followup.core.forecast.priors import PUBLISHED, ShopPriors
from followup.rehearsal.fleet.build import build_fleet
from followup.rehearsal.fleet.habits import DIFFERING
from followup.storage import shops, tables, windows
from followup.storage.shop_priors import priors_of
from followup.wiring import House
from followup.workflows import learn_priors as workflow
from followup.workflows.learn_priors import NIGHTLY, ShopChangedMeanwhile, bring_back, go_by_published, newest_version
from tests.shop_of_tests import BEGIN, open_test_house

CARS = 60
# 3 o'clock in Chicago, the night after `BEGIN`.
NIGHT = datetime(2026, 11, 25, 9, 0, tzinfo=UTC)


@dataclass
class Learning:
    """A shop in an own copy of the database, with the readings of a shop that differs."""

    house: House
    shop_id: int
    clock: Path

    def go_to(self, at: datetime) -> None:
        self.clock.write_text(at.isoformat().replace("+00:00", "Z"), encoding="utf-8")

    def priors(self) -> ShopPriors:
        with self.house.store.read() as connection:
            return priors_of(connection, shops.load_shop(connection, self.shop_id))

    def news(self) -> int:
        with self.house.store.read() as connection:
            return len(windows.cars_with_news(connection, self.shop_id))


@pytest.fixture(scope="module")
def filled(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Path]:
    """The database of the shop, filled once."""
    folder = tmp_path_factory.mktemp("differing")
    with pytest.MonkeyPatch.context() as patch:
        house, shop_id = open_test_house(f"sqlite+pysqlite:///{folder / 'followup.db'}", folder, patch)
        lines = [json.dumps(line) for line in build_fleet(DIFFERING, CARS, 4301).lines]
        kept = list(house.keep_inspections(shop_id, lines, "test", accepts_doubtful=True))
        assert {one.outcome for one in kept} <= {"new", "unchanged", "corrected"}
        house.close()
    yield folder / "followup.db"


@pytest.fixture
def shop(filled: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Learning]:
    shutil.copy(filled, tmp_path / "followup.db")
    clock = tmp_path / "clock"
    clock.write_text(BEGIN.isoformat().replace("+00:00", "Z"), encoding="utf-8")
    monkeypatch.setenv("FOLLOWUP_CLOCK", str(clock))
    url = f"sqlite+pysqlite:///{tmp_path / 'followup.db'}"
    for name, value in (("DATABASE_URL", url), ("SECRET_KEY", "s" * 32), ("LEDGER_HASH_KEY", "s" * 32)):
        monkeypatch.setenv(f"FOLLOWUP_{name}", value)
    from followup.wiring import open_house

    house = open_house()
    yield Learning(house, house.shops()[0][0], clock)
    house.close()


def test_what_is_learned_is_kept_with_day_cars_and_scores_and_used(shop: Learning) -> None:
    told: list[int] = []
    run = shop.house.learn(shop.shop_id, "mara", told.append)
    assert run.is_used and run.version == 1
    assert CARS <= sum(told) <= 5 * CARS
    with shop.house.store.read() as connection:
        row = connection.execute(select(tables.learned_priors)).mappings().one()
    assert (row["at"], row["author"], row["cars"], row["source"]) == (BEGIN, "mara", CARS, "learned")
    assert {"published_score", "own_score", "cars"} <= set(row["body"]["parts"][0])
    assert shop.priors().wear == run.learned.priors.wear != ()
    assert shop.priors().tire_seasons == priors_before(shop).tire_seasons


def priors_before(shop: Learning) -> ShopPriors:
    with shop.house.store.read() as connection:
        from followup.core.forecast.tire_seasons import tire_seasons

        found = shops.load_shop(connection, shop.shop_id)
    return ShopPriors(tire_seasons=tire_seasons(found.state))


def test_forecasts_are_made_anew_by_what_was_learned(shop: Learning) -> None:
    assert shop.house.forecast(shop.shop_id) == CARS
    assert shop.news() == 0
    before = bodies(shop)
    shop.go_to(BEGIN + timedelta(hours=1))
    assert shop.house.learn(shop.shop_id, "mara").is_used
    assert shop.news() == CARS
    shop.go_to(BEGIN + timedelta(hours=2))
    assert shop.house.forecast(shop.shop_id) == CARS
    assert bodies(shop) != before
    assert shop.news() == 0


def bodies(shop: Learning) -> list[object]:
    with shop.house.store.read() as connection:
        found = windows.all_windows(connection, shop.shop_id)
    return [row["body"]["curve"] for rows in found.values() for row in rows]


def test_the_published_values_come_back_by_a_press_and_learning_rests(shop: Learning) -> None:
    run = shop.house.learn(shop.shop_id, "mara")
    assert go_by_published(shop.house.store, shop.shop_id, "mara", shop.house.now(), run.version) == 2
    assert (shop.priors().usage, shop.priors().wear) == (PUBLISHED.usage, PUBLISHED.wear)
    shop.go_to(NIGHT)
    keep_one_more(shop)
    assert shop.house.learn_at_night(shop.shop_id) is None
    assert bring_back(shop.house.store, shop.shop_id, 1, "mara", shop.house.now(), 2) == 3
    assert shop.priors().wear == run.learned.priors.wear
    assert len(versions_kept(shop)) == 3


def versions_kept(shop: Learning) -> list[int]:
    with shop.house.store.read() as connection:
        return list(connection.execute(select(tables.learned_priors.c.version)).scalars())


def test_whoever_saw_an_older_version_changes_nothing(shop: Learning) -> None:
    shop.house.learn(shop.shop_id, "mara")
    with pytest.raises(ShopChangedMeanwhile):
        go_by_published(shop.house.store, shop.shop_id, "mara", shop.house.now(), 0)
    assert versions_kept(shop) == [1]


def test_what_was_never_learned_cannot_be_brought_back(shop: Learning) -> None:
    go_by_published(shop.house.store, shop.shop_id, "mara", shop.house.now(), 0)
    for version in (1, 7):
        with pytest.raises(LookupError):
            bring_back(shop.house.store, shop.shop_id, version, "mara", shop.house.now(), 1)


def keep_one_more(shop: Learning) -> None:
    line = build_fleet(DIFFERING, 2, 4302).lines[-1]
    changed = {**line, "vehicle": "V-9999", "visit": f"RO-{shop.house.now():%H%M%S}"}
    if "inspection" in line:
        changed = {**line, "inspection": f"I-{shop.house.now():%d%H%M%S}"}
        changed.pop("visit", None)
    kept = shop.house.keep_inspection(shop.shop_id, json.dumps(changed), "test", accepts_doubtful=True)
    assert kept.outcome == "new", kept


def test_it_is_learned_at_night_once_and_only_where_there_is_news(shop: Learning) -> None:
    """`BEGIN` is 9 in the morning in Chicago."""
    assert shop.house.learn_at_night(shop.shop_id) is None
    shop.go_to(NIGHT)
    run = shop.house.learn_at_night(shop.shop_id)
    assert run is not None and run.is_used
    shop.go_to(NIGHT + timedelta(hours=1))
    keep_one_more(shop)
    assert shop.house.learn_at_night(shop.shop_id) is None, "once a night"
    shop.go_to(NIGHT + timedelta(days=1))
    again = shop.house.learn_at_night(shop.shop_id)
    assert again is not None
    shop.go_to(NIGHT + timedelta(days=2))
    assert shop.house.learn_at_night(shop.shop_id) is None, "no news"
    with shop.house.store.read() as connection:
        authors = set(connection.execute(select(tables.learned_priors.c.author)).scalars())
    assert authors == {NIGHTLY}


def test_one_more_car_makes_no_new_forecast_of_all(shop: Learning) -> None:
    """What hardly differs from what is in use is kept in the list, and not used."""
    assert shop.house.learn(shop.shop_id, "mara").is_used
    again = shop.house.learn(shop.shop_id, "mara")
    assert again.learned.is_news and not again.is_used
    assert versions_kept(shop) == [1, 2]


def test_the_clock_has_a_tick_for_it(shop: Learning, monkeypatch: pytest.MonkeyPatch) -> None:
    shop.go_to(NIGHT)
    monkeypatch.setattr(scheduler, "TICKS", tuple(one for one in scheduler.TICKS if one.name == "learn"))
    assert scheduler.run_due(shop.house, "test") == 1
    assert versions_kept(shop) == [1]


def test_the_command_says_what_is_kept(shop: Learning, tmp_path: Path) -> None:
    file = tmp_path / "learned.json"
    done = CliRunner().invoke(main, ["learn", "--json", str(file)])
    assert done.exit_code == 0, done.output
    assert "Tire tread: front wears about" in done.stdout
    assert "Kept as version 1: forecasts go by it from now on." in done.stdout
    told = json.loads(file.read_text(encoding="utf-8"))
    assert told["version"] == 1 and told["is_used"] and told["cars"] == CARS
    assert told["says"] == done.stdout.splitlines()

    back = CliRunner().invoke(main, ["learn", "--published"])
    assert back.exit_code == 0 and "published values" in back.stdout
    again = CliRunner().invoke(main, ["learn", "--use", "1"])
    assert again.exit_code == 0 and "Forecasts go by version 1 again, kept as version 3" in again.stdout
    assert CliRunner().invoke(main, ["learn", "--use", "2"]).exit_code == 2
    assert CliRunner().invoke(main, ["learn", "--use", "1", "--published"]).exit_code == 2


def test_the_command_says_no_where_nothing_can_be_learned(
    sqlite_url: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    house, shop_id = open_test_house(sqlite_url, tmp_path, monkeypatch)
    for name, value in (("DATABASE_URL", sqlite_url), ("SECRET_KEY", "s" * 32), ("LEDGER_HASH_KEY", "s" * 32)):
        monkeypatch.setenv(f"FOLLOWUP_{name}", value)
    done = CliRunner().invoke(main, ["learn"])
    assert done.exit_code == 1, done.output
    assert "12 that were seen twice are needed" in done.stdout
    assert newest_version(house.store, shop_id) == 1
    house.close()


def test_a_night_without_end_of_the_run_learns_the_next(shop: Learning, monkeypatch: pytest.MonkeyPatch) -> None:
    """If the process dies before the version is kept, nothing was done."""

    def dies(*_: object, **__: object) -> int:
        raise RuntimeError("killed")

    shop.go_to(NIGHT)
    monkeypatch.setattr(workflow.learned_priors, "keep", dies)
    with pytest.raises(RuntimeError):
        shop.house.learn_at_night(shop.shop_id)
    monkeypatch.undo()
    assert versions_kept(shop) == []
