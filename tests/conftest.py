"""What all tests share: an empty database of each kind.

`database_url` runs a test once on a SQLite file and once on PostgreSQL; `sqlite_url` and `postgresql_url` name one
kind; `memory_url` is the quickest and lives within one connection. `demo` is a copy of the demo shop;
`full` one in which something of everything happened.
"""

from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import settings

from tests.databases import NoPostgreSQL, PostgreSQL, start_postgresql
from tests.web.full_shop import fill_up
from tests.workflows.demo import Demo, make_once, open_copy, open_demo, set_up_demo

# The same examples every time and on every machine, however loaded it is, and no folder of examples left behind.
settings.register_profile("followup", derandomize=True, deadline=None, database=None)
settings.load_profile("followup")


@pytest.fixture(scope="session")
def postgresql() -> Iterator[PostgreSQL]:
    """A server for this process of tests; started when a test first asks for it."""
    try:
        server = start_postgresql()
    except NoPostgreSQL as reason:
        # Not every machine has PostgreSQL; the program's first database is SQLite and is always tested.
        pytest.skip(f"no PostgreSQL here: {reason}")
    yield server
    server.stop()


@pytest.fixture
def memory_url() -> str:
    """An empty SQLite database in memory."""
    return "sqlite+pysqlite:///:memory:"


@pytest.fixture
def sqlite_url(tmp_path: Path) -> str:
    """An empty SQLite database in a file."""
    return f"sqlite+pysqlite:///{tmp_path / 'followup.db'}"


@pytest.fixture
def postgresql_url(postgresql: PostgreSQL) -> Iterator[str]:
    """An empty PostgreSQL database."""
    url = postgresql.new_database()
    yield url
    postgresql.drop_database(url)


@pytest.fixture(params=["sqlite", "postgresql"])
def database_url(request: pytest.FixtureRequest) -> str:
    """An empty database of each kind, one after the other."""
    url = request.getfixturevalue(f"{request.param}_url")
    assert isinstance(url, str)
    return url


@pytest.fixture(scope="session")
def shared_folder(tmp_path_factory: pytest.TempPathFactory, worker_id: str) -> Path:
    """A folder for what processes of tests that run side by side make once."""
    own = tmp_path_factory.getbasetemp()
    return own if worker_id == "master" else own.parent


@pytest.fixture(scope="session")
def demo_template(shared_folder: Path) -> Path:
    """The folder of a demo shop to copy."""
    return make_once(shared_folder, "demo-shop", set_up_demo)


@pytest.fixture
def demo(demo_template: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Demo]:
    """A copy of the demo shop on its first morning."""
    opened = open_demo(demo_template, tmp_path, monkeypatch)
    yield opened
    opened.house.close()


@pytest.fixture(scope="session")
def full_template(shared_folder: Path, demo_template: Path) -> Path:
    """The folder of a demo shop in which something of everything happened."""
    return make_once(shared_folder, "full-shop", lambda folder: fill_up(demo_template, folder))


@pytest.fixture
def full(full_template: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Demo]:
    """A copy of that shop."""
    opened = open_copy(full_template, tmp_path, monkeypatch)
    yield opened
    opened.house.close()
