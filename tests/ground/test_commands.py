"""The two commands say in one sentence what is missing, and start at once the second time.

They run for real (`dash`, or whatever `sh` is) in a small copy with a PATH of our choosing; nothing is fetched: `pip`
is played by a script that notes how it was called. The full run from a fresh clone is made by hand before a release.
"""

import shutil
import subprocess
import sys
import tomllib
from pathlib import Path

import pytest
from packaging.requirements import Requirement
from packaging.version import Version

from tests.ground.copies import ROOT

TOOLS = ["sh", "dirname", "cat", "cksum", "rm", "date", "id"]
COMMANDS = ["demo", "check"]
CLOSING_LINE = "runs 3 lost 0 duplicated 0 open 0 seed 1"


@pytest.fixture
def checkout(tmp_path: Path) -> Path:
    """What the commands read, in a folder whose name has a space."""
    folder = tmp_path / "a checkout"
    shutil.copytree(ROOT / "deploy", folder / "deploy", ignore=shutil.ignore_patterns("pictures"))
    shutil.copy(ROOT / "pyproject.toml", folder)
    (tmp_path / "bin").mkdir()
    for tool in TOOLS:
        found = shutil.which(tool)
        assert found, f"this machine has no {tool}"
        (tmp_path / "bin" / tool).symlink_to(found)
    return folder


def _program(checkout: Path, name: str, script: str) -> None:
    path = checkout.parent / "bin" / name
    path.write_text(f"#!/bin/sh\n{script}\n")
    path.chmod(0o755)


def _run(checkout: Path, command: str, *arguments: str) -> subprocess.CompletedProcess[str]:
    """Runs the command from another folder, with nothing on PATH but the tools and what the test put there."""
    environment = {"PATH": str(checkout.parent / "bin"), "HOME": str(checkout.parent)}
    program = ["sh", str(checkout / "deploy" / command), *arguments]
    return subprocess.run(program, cwd="/", env=environment, capture_output=True, text=True, timeout=120)


def _pretend_python(checkout: Path, without: str = "", failing: str = "nothing") -> None:
    """This very Python on PATH, with a `pip` that only notes its calls and checks that only say that they ran.

    `without` some ability, or with checks `failing` (both patterns of the shell).
    """
    log = checkout.parent / "pip-calls"
    fail_on = f'case "$*" in {without}) exit 1 ;; esac\n' if without else ""
    # The environment's python is replaced by this same script, so that its pip is pretended too.
    script = f"""{fail_on}case "$*" in
*"-m venv"*)
    for folder in "$@"; do :; done
    mkdir -p "$folder/bin" && cp "$0" "$folder/bin/python" && : >"$folder/pyvenv.cfg"
    printf '%s\\n' '#!/bin/sh' 'echo "followup $*"' >"$folder/bin/followup" && chmod +x "$folder/bin/followup" ;;
*tests.faults.tally*) echo "{CLOSING_LINE}" ;;
*"-m pip"*) printf '%s\\n' "$*" >>"{log}" ;;
*"-m ruff"*|*"-m mypy"*|*"-m pytest"*|*importlinter*) case "$*" in {failing}) exit 1 ;; esac; echo "ran $*" ;;
*) exec "{sys.executable}" "$@" ;;
esac"""
    _program(checkout, "python3", script)
    for tool in ("mkdir", "cp", "chmod"):
        (checkout.parent / "bin" / tool).symlink_to(str(shutil.which(tool)))


def _pip_calls(checkout: Path) -> list[str]:
    log = checkout.parent / "pip-calls"
    calls = log.read_text().splitlines() if log.exists() else []
    return [call for call in calls if " install " in call]


@pytest.mark.parametrize("command", COMMANDS)
def test_without_python_it_says_what_to_install(checkout: Path, command: str) -> None:
    done = _run(checkout, command)
    assert done.returncode == 1
    assert done.stderr.splitlines() == [done.stderr.strip()]
    assert "needs Python 3.11 or newer" in done.stderr
    assert "apt-get install python3" in done.stderr


@pytest.mark.parametrize("command", COMMANDS)
def test_with_an_old_python_it_says_which(checkout: Path, command: str) -> None:
    _program(checkout, "python3", 'case "$*" in *print*) echo 3.9 ;; *) exit 1 ;; esac')
    done = _run(checkout, command)
    assert done.returncode == 1
    assert done.stderr.strip() == "followup needs Python 3.11 or newer, and python3 is 3.9: please install a newer one."


def test_without_venv_it_names_the_package(checkout: Path) -> None:
    _pretend_python(checkout, without='*"-m venv"*')
    done = _run(checkout, "demo")
    assert done.returncode == 1
    assert "apt-get install python3-venv" in done.stderr.splitlines()[-1]
    assert not (checkout / ".venv").exists()


def test_without_any_pip_it_names_the_package(checkout: Path) -> None:
    _pretend_python(checkout, without='*"-m pip"*|*ensurepip*')
    done = _run(checkout, "demo")
    assert done.returncode == 1
    assert "apt-get install python3-venv" in done.stderr.splitlines()[-1]


def test_without_network_it_asks_for_one(checkout: Path) -> None:
    _pretend_python(checkout, without='*"-m pip install"*')
    done = _run(checkout, "demo")
    assert done.returncode == 1
    assert "is there a network?" in done.stderr.splitlines()[-1]
    # And nothing is taken for done: with a network, the next run goes on.
    assert not (checkout / ".venv" / "prepared-runtime").exists()


def test_a_folder_of_that_name_that_is_not_ours_is_left_alone(checkout: Path) -> None:
    _pretend_python(checkout)
    (checkout / ".venv").mkdir()
    (checkout / ".venv" / "mine").touch()
    done = _run(checkout, "demo")
    assert done.returncode == 1
    assert (checkout / ".venv" / "mine").exists()


def test_the_second_run_starts_at_once(checkout: Path) -> None:
    _pretend_python(checkout)
    first = _run(checkout, "demo", "--story")
    assert (first.returncode, first.stdout) == (0, "followup demo --story\n")
    calls = _pip_calls(checkout)
    assert len(calls) == 2
    assert "--require-hashes -r deploy/requirements.txt" in calls[0]
    assert "--no-deps --no-build-isolation -e ." in calls[1]
    second = _run(checkout, "demo", "--story")
    assert (second.returncode, second.stdout, second.stderr) == (0, "followup demo --story\n", "")
    assert _pip_calls(checkout) == calls


def test_a_changed_lock_is_installed_again(checkout: Path) -> None:
    _pretend_python(checkout)
    _run(checkout, "demo")
    with (checkout / "deploy" / "requirements.txt").open("a") as lock:
        lock.write("# changed\n")
    _run(checkout, "demo")
    assert len(_pip_calls(checkout)) == 4


def test_nothing_but_the_environment_is_left(checkout: Path) -> None:
    _pretend_python(checkout)
    before = set(checkout.iterdir())
    _run(checkout, "demo")
    assert set(checkout.iterdir()) - before == {checkout / ".venv"}


def test_check_refuses_what_it_does_not_know(checkout: Path) -> None:
    done = _run(checkout, "check", "--quick")
    assert done.returncode == 1
    assert done.stderr == "usage: sh deploy/check [--faults]\n"


def test_check_runs_every_stage(checkout: Path) -> None:
    _pretend_python(checkout)
    _program(checkout, "chromium", "echo pretended")
    done = _run(checkout, "check")
    assert done.returncode == 0, done.stderr
    ran = [line for line in done.stdout.splitlines() if line.startswith("ran ")]
    for part in ("ruff check", "ruff format --check", "mypy", "importlinter", "-m browser", "not browser"):
        assert [line for line in ran if part in line], part
    assert len(ran) == 6
    assert "FAILED" not in done.stderr


@pytest.mark.parametrize("failing", ["nothing", '*"-m faults"*'])
def test_check_with_faults_ends_with_the_count_of_trials(checkout: Path, failing: str) -> None:
    _pretend_python(checkout, failing=failing)
    _program(checkout, "chromium", "echo pretended")
    done = _run(checkout, "check", "--faults")
    assert done.returncode == int(failing != "nothing"), done.stderr
    assert done.stdout.splitlines()[-1] == CLOSING_LINE
    assert ("FAILED: faults" in done.stderr) is (failing != "nothing")


@pytest.mark.parametrize(
    ("failing", "stage"),
    [('*"ruff check"*', "style"), ('*"ruff format"*', "format"), ("*mypy*", "types"), ("*importlinter*", "imports"),
     ('*"-m browser"*', "pages"), ('*"not browser"*', "tests")],
)  # fmt: skip
def test_check_fails_with_any_stage_and_runs_the_others(checkout: Path, failing: str, stage: str) -> None:
    _pretend_python(checkout, failing=failing)
    _program(checkout, "chromium", "echo pretended")
    done = _run(checkout, "check")
    assert done.returncode == 1
    assert done.stderr.splitlines()[-1] == f"FAILED: {stage}"
    assert len([line for line in done.stdout.splitlines() if line.startswith("ran ")]) == 5


def test_without_chromium_check_says_what_it_left_out(checkout: Path) -> None:
    _pretend_python(checkout)
    done = _run(checkout, "check")  # nothing on this PATH could install it either
    assert done.returncode == 0, done.stderr
    assert "SKIPPED: the tests of the pages in a browser, because there is no chromium" in done.stderr
    assert not [line for line in done.stdout.splitlines() if "-m browser" in line]


def _locked(name: str) -> dict[str, set[str]]:
    """Package -> locked versions (one for each range of Pythons)."""
    versions: dict[str, set[str]] = {}
    for line in (ROOT / "deploy" / name).read_text().splitlines():
        if "==" in line and not line.startswith((" ", "#")):
            package, version = line.split(" ")[0].split("==")
            versions.setdefault(package.lower(), set()).add(version)
    return versions


def test_the_locks_hold_what_the_project_asks_for() -> None:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text())
    asked = project["project"]["dependencies"] + project["dependency-groups"]["build"]
    extra = [name for name in project["dependency-groups"]["dev"] if isinstance(name, str)]
    for lock, requirements in (("requirements.txt", asked), ("requirements-dev.txt", asked + extra)):
        locked = _locked(lock)
        for text in requirements:
            wanted = Requirement(text)
            versions = locked.get(wanted.name.lower(), set())
            assert versions, f"{lock} lacks {wanted.name}: sh deploy/lock"
            assert all(wanted.specifier.contains(Version(version)) for version in versions), f"{lock}: {text}"


def test_both_locks_agree_and_every_package_has_its_hash() -> None:
    runtime, development = _locked("requirements.txt"), _locked("requirements-dev.txt")
    assert {name: development.get(name) for name in runtime} == runtime
    for lock in ("requirements.txt", "requirements-dev.txt"):
        text = (ROOT / "deploy" / lock).read_text()
        entries = text.split("\n\n")[0].replace("\\\n", "").splitlines()
        assert [entry for entry in entries if "--hash=sha256:" not in entry] == []
        assert "://" not in text  # no address of an index
