"""The benches of starts and of checks measure what they name; what a start needs not is not imported.

The bars themselves are this project's own and are asked of a quiet machine, not of a test.
"""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from followup import passwords
from followup.rehearsal.bench import checks, start
from followup.storage import schema
from followup.storage.store import Store, make_engine

# Each takes a tenth of a second or more, and no first page needs it.
SLOW = ("alembic", "icalendar", "requests", "scipy", "pandas", "twilio.rest", "apscheduler")
_START = f"""
import sys
from followup.cli.house import the_house
from followup.web.app import create_app
with the_house() as house:
    house.upgrade_database()
    page = create_app(house).test_client().get("/sign-in")
    assert page.status_code == 200, page.status
print([name for name in {SLOW!r} if name in sys.modules])
"""


@pytest.fixture
def present(sqlite_url: str) -> str:
    """A database that needs no migration."""
    store = Store(make_engine(sqlite_url))
    schema.upgrade(store.engine)
    store.close()
    return sqlite_url


def test_a_first_page_imports_nothing_slow_that_it_does_not_need(present: str, tmp_path: Path) -> None:
    settings = {
        "FOLLOWUP_DATABASE_URL": present, "FOLLOWUP_SECRET_KEY": "k" * 40, "FOLLOWUP_LEDGER_HASH_KEY": "l" * 40,
        "PATH": str(Path(sys.executable).parent),
    }  # fmt: skip
    done = subprocess.run(
        [sys.executable, "-c", _START], env=settings, cwd=tmp_path, capture_output=True, text=True, check=False
    )
    assert (done.stdout.strip(), done.returncode) == ("[]", 0), done.stderr


def test_an_older_database_is_still_upgraded(present: str) -> None:
    store = Store(make_engine(present))
    with store.read() as connection:
        assert schema._is_newest(connection)
    with store.write() as connection:
        connection.exec_driver_sql("UPDATE alembic_version SET version_num = '0001'")
    with store.read() as connection:
        assert not schema._is_newest(connection)
    store.close()


def test_every_start_is_measured() -> None:
    told: list[int] = []
    figures = start.bench_start(start.Asked(1), told.append)
    assert sum(told) == start.Asked(1).steps
    found = {one.check: float(one.found.split()[0].replace(",", "")) for one in figures}
    # Whoever starts the pages imports the command line as well.
    assert found[start.PAGES] > found[start.HELP] > 0


def test_every_check_is_measured_and_a_name_without_account_is_seen(monkeypatch: pytest.MonkeyPatch) -> None:
    right = passwords.is_right
    monkeypatch.setattr(passwords, "is_right", lambda said, kept: kept is not None and right(said, kept))
    told: list[int] = []
    figures = checks.bench_checks(checks.Asked(1), told.append)
    assert sum(told) == 1
    # It would answer at once, so the ratio tells that there is no account.
    nobody = next(one for one in figures if one.check.startswith(checks.NOBODY))
    assert nobody.holds is False
    assert next(one for one in figures if one.check.endswith(checks.COMPILED) and "of" in one.check).holds
