"""A backup is whole though others write, is read by its owner alone, and sends nothing until somebody says so.

Source: this project's own bars (a copy of the file misses what stands in its log; measured with SQLite 3.40).
"""

from __future__ import annotations

import shutil
import sqlite3
import subprocess
import threading
from contextlib import closing
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from click.testing import CliRunner
from sqlalchemy import text
from sqlalchemy.engine import make_url

from followup.cli import main
from followup.settings import Settings
from followup.storage import installation, outbox, rows, schema, shops, tables
from followup.storage.store import Store, make_engine
from followup.wiring import House, open_house
from followup.workflows.back_up import BackupFailed, back_up
from followup.workflows.take_over import take_over, where_it_is
from tests.workflows.demo import Demo

BACKUPS = 20
NOW = datetime(2026, 11, 23, 15, 0, tzinfo=UTC)
MORNING = "2026-11-23T10:30"


def _write_for_ever(store: Store, number: int, ended: threading.Event, written: list[int]) -> None:
    """Two rows a transaction: no consistent view has one of them alone."""
    count = 0
    while not ended.is_set():
        with store.write() as connection:
            connection.execute(text("INSERT INTO one VALUES (:n)"), {"n": count})
            connection.execute(text("INSERT INTO other VALUES (:n)"), {"n": count})
        count += 1
        ended.wait(0.002)
    written[number] = count


def test_every_backup_beside_writers_is_sound_and_whole(sqlite_url: str, tmp_path: Path) -> None:
    store = Store(make_engine(sqlite_url))
    schema.upgrade(store.engine)
    with store.write() as connection:
        for name in ("one", "other"):
            connection.execute(text(f"CREATE TABLE {name} (n INTEGER)"))
    ended, written = threading.Event(), [0, 0]
    writers = [
        threading.Thread(target=_write_for_ever, args=(Store(make_engine(sqlite_url)), number, ended, written))
        for number in range(2)
    ]
    for one in writers:
        one.start()
    counts = []
    for number in range(BACKUPS):
        file = tmp_path / f"backup-{number}.db"
        back_up(store, file, NOW)
        assert file.stat().st_mode & 0o777 == 0o600
        with closing(sqlite3.connect(file)) as copy:
            assert copy.execute("PRAGMA integrity_check").fetchall() == [("ok",)]
            one, other = (copy.execute(f"SELECT count(*) FROM {name}").fetchone()[0] for name in ("one", "other"))
        assert one == other
        counts.append(one)
    ended.set()
    for writer in writers:
        writer.join()
    assert counts == sorted(counts) and counts[-1] <= sum(written)
    assert sum(written) > BACKUPS
    assert not list(tmp_path.glob(".*part*"))
    store.close()


def _open_at(demo: Demo, url: str) -> House:
    return open_house(Settings.model_validate({**demo.house.settings.model_dump(), "database_url": url}))


def _states(house: House, shop_id: int) -> list[str]:
    with house.store.read() as connection:
        return [row["state"] for row in outbox.texts_of_shop(connection, shop_id)]


def test_what_became_due_after_the_backup_is_held_in_the_copy(demo: Demo, tmp_path: Path) -> None:
    """The old place planned and sent it meanwhile, and nothing in the copy knows."""
    file = tmp_path / "elsewhere" / "back.db"
    file.parent.mkdir()
    back_up(demo.house.store, file, demo.house.now())
    with closing(sqlite3.connect(file)) as earlier:
        # As if it had been made before the morning's planning.
        for statement in (
            "DELETE FROM window_uses",
            "DELETE FROM texts WHERE kind = 'invite'",
            "DELETE FROM reasons WHERE id NOT IN (SELECT reason_id FROM texts)",
        ):
            earlier.execute(statement)
        earlier.commit()
    demo.at(MORNING)
    demo.run()
    sent = _invites(demo.house, demo.shop_id, "sent")
    assert len(sent) > 10
    copy = Demo(_open_at(demo, f"sqlite+pysqlite:///{file}"), demo.shop_id)
    take_over(copy.house.store, "ann", copy.house.now())
    copy.house.plan(copy.shop_id)
    copy.run()
    assert sent <= _invites(copy.house, demo.shop_id, "held")
    assert not _invites(copy.house, demo.shop_id, "sent")
    # From the next day on what is planned is new.
    with copy.house.store.read() as connection:
        assert installation.plans_anew(connection, copy.house.now())
        assert not installation.plans_anew(connection, copy.house.now() + timedelta(days=1))
    copy.house.close()


def _invites(house: House, shop_id: int, state: str) -> set[tuple[str, str]]:
    with house.store.read() as connection:
        texts = outbox.texts_of_shop(connection, shop_id)
    return {(row["number"], row["reason"]) for row in texts if row["kind"] == "invite" and row["state"] == state}


def test_a_restored_backup_sends_nothing_until_somebody_says_so(demo: Demo, tmp_path: Path) -> None:
    demo.run()
    file = tmp_path / "elsewhere" / "back.db"
    file.parent.mkdir()
    planned = _states(demo.house, demo.shop_id).count("planned")
    assert planned > 10
    back_up(demo.house.store, file, demo.house.now())
    demo.at(MORNING)
    copy = Demo(_open_at(demo, f"sqlite+pysqlite:///{file}"), demo.shop_id)
    copy.run()
    assert _states(copy.house, demo.shop_id).count("planned") == planned
    assert "it sends nothing" in where_it_is(copy.house.store).says
    # Where it was, they leave.
    demo.run()
    sent = _states(demo.house, demo.shop_id).count("sent")
    assert sent > 10
    # What was due before somebody said so may have left there, and did: it waits for a person.
    assert take_over(copy.house.store, "ann", copy.house.now()) == sent
    copy.run()
    assert copy.shown(_a_number(copy)) == []
    assert _states(copy.house, demo.shop_id).count("held") == sent
    assert where_it_is(copy.house.store).says == ""
    assert take_over(copy.house.store, "ann", copy.house.now()) is None
    copy.house.close()


def _a_number(demo: Demo) -> str:
    with demo.house.store.read() as connection:
        return str(outbox.texts_of_shop(connection, demo.shop_id)[0]["number"])


def test_what_falls_due_after_somebody_said_so_leaves(demo: Demo, tmp_path: Path) -> None:
    demo.run()
    file = tmp_path / "copy.db"
    back_up(demo.house.store, file, demo.house.now())
    copy = Demo(_open_at(demo, f"sqlite+pysqlite:///{file}"), demo.shop_id)
    # At nine, an hour before the first may leave.
    assert take_over(copy.house.store, "ann", copy.house.now()) == 0
    copy.run(MORNING)
    assert _states(copy.house, demo.shop_id).count("sent") > 10
    copy.house.close()


def test_a_backup_laid_over_the_old_file_is_known(demo: Demo, tmp_path: Path) -> None:
    demo.run()
    file, here = tmp_path / "copy.db", Path(str(make_url(demo.house.settings.database_url).database))
    back_up(demo.house.store, file, demo.house.now())
    demo.house.close()
    with file.open("rb") as source, here.open("r+b") as target:
        shutil.copyfileobj(source, target)
        target.truncate()
    for ending in ("-wal", "-shm"):
        here.with_name(here.name + ending).unlink(missing_ok=True)
    demo.at(MORNING)
    demo.run()
    assert "sent" not in _states(demo.house, demo.shop_id)


@pytest.mark.parametrize("way", ["copied", "moved"])
def test_a_file_that_lies_elsewhere_sends_nothing(demo: Demo, tmp_path: Path, way: str) -> None:
    demo.run()
    here, there = Path(str(make_url(demo.house.settings.database_url).database)), tmp_path / "there.db"
    demo.house.close()
    (shutil.copy if way == "copied" else shutil.move)(here, there)
    copy = Demo(_open_at(demo, f"sqlite+pysqlite:///{there}"), demo.shop_id)
    copy.at(MORNING)
    copy.run()
    assert "sent" not in _states(copy.house, demo.shop_id)
    copy.house.close()


def test_doctor_and_the_command_say_so(demo: Demo, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    demo.run()
    file = tmp_path / "back.db"
    done = CliRunner().invoke(main, ["backup", str(file)])
    assert (done.exit_code, "followup db here" in done.output) == (0, True)
    assert CliRunner().invoke(main, ["backup", str(file)]).exit_code == 2
    monkeypatch.setenv("FOLLOWUP_DATABASE_URL", f"sqlite+pysqlite:///{file}")
    told = CliRunner().invoke(main, ["doctor"])
    assert (told.exit_code, "this database is a copy and knows nothing since 2026-11-23" in told.output) == (1, True)
    assert CliRunner().invoke(main, ["db", "here", "--who", "ann"]).exit_code == 0
    assert "is a copy" not in CliRunner().invoke(main, ["doctor"]).output
    assert "already" in CliRunner().invoke(main, ["db", "here"]).output
    copy = Store(make_engine(f"sqlite+pysqlite:///{file}"))
    with copy.read() as connection:
        noted = rows.every(connection, tables.audit.select())[-1]
    assert (noted["who"], noted["did"]) == ("ann", "said that this database is the shop now")
    copy.close()


def test_a_backup_that_cannot_be_written_leaves_no_file(demo: Demo, tmp_path: Path) -> None:
    with pytest.raises(BackupFailed):
        back_up(demo.house.store, tmp_path / "no such folder" / "back.db", demo.house.now())
    done = CliRunner().invoke(main, ["backup", str(tmp_path / "no such folder" / "back.db")])
    assert done.exit_code == 1


def test_a_copy_of_a_postgresql_database_sends_nothing(postgresql_url: str, tmp_path: Path) -> None:
    """Copied by our command and put back by PostgreSQL's own; the clock of the machine is not asked."""
    store = Store(make_engine(postgresql_url))
    schema.upgrade(store.engine)
    with store.write() as connection:
        assert installation.move_in(connection, NOW).sends
        shops.add_shop(connection, NOW, "elm", {"name": "Elm", "zone": "America/Chicago", "phone": "+13125550101",
                                                "texts_from": "+13125550100"})  # fmt: skip
    file = tmp_path / "elm.dump"
    if shutil.which("pg_restore") is None:
        with pytest.raises(BackupFailed, match="install the client"):
            back_up(store, file, NOW)
        return
    assert "pg_restore" in back_up(store, file, NOW)
    assert file.stat().st_mode & 0o777 == 0o600
    url = make_url(postgresql_url)
    server = ["-h", str(url.query["host"]), "-p", str(url.query["port"]), "-U", str(url.username)]
    subprocess.run(["createdb", *server, f"{url.database}_back"], check=True)
    subprocess.run(["pg_restore", *server, "--no-owner", f"--dbname={url.database}_back", str(file)], check=True)
    copy = Store(make_engine(url.set(database=f"{url.database}_back").render_as_string(hide_password=False)))
    with copy.write() as connection:
        assert installation.standing(connection).state == "elsewhere"
        assert len(shops.shop_codes(connection)) == 1
        installation.take_over(connection, NOW + timedelta(hours=1), "ann")
        assert installation.standing(connection).sends
    with store.read() as connection:
        assert installation.standing(connection).sends
    store.close()
    copy.close()
