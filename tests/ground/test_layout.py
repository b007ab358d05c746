"""The checkout and its modules keep to the layout: what lies where, how long, how named, and that it says what for."""

import ast
import re
import subprocess
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.ground.copies import ROOT

TOP_LEVEL = {
    "README.md", "DEVELOPERS.md", "pyproject.toml", "followup", "message_templates", "tests", "demo_data", "deploy",
}  # fmt: skip
# They say nothing of what a thing is for. (`web/manager/` is the shop's manager, a person.)
EMPTY_NAMES = {"utils", "util", "helpers", "helper", "common", "misc", "manager", "service", "base"}
PEOPLE = {"followup/web/manager/", "tests/web/manager/"}
LINES_IN_A_MODULE = 400
LINES_IN_A_FUNCTION = 50
SILENCED = re.compile(r"#\s*(type:\s*ignore|noqa)[^#]*|@pytest\.mark\.(skip|xfail)\b[^#]*")
PATH_OF_A_MACHINE = re.compile(r"(?<![\w.>}])/(?:work|farm|root|Users|home/\w+)/")


def _committed(pattern: str = "") -> list[str]:
    """Paths under version control (scratch files are nobody's business); all files where this is no checkout."""
    listed = subprocess.run(["git", "ls-files", "-z", pattern or "."], cwd=ROOT, capture_output=True, check=False)
    if listed.returncode == 0:
        names = listed.stdout.decode().split("\0")
        return sorted(name for name in names if name and (ROOT / name).exists())
    found = [path.relative_to(ROOT) for path in ROOT.rglob(pattern or "*") if path.is_file()]
    return sorted(path.as_posix() for path in found if not any(part[0] in "._" for part in path.parts[:-1]))


MODULES = _committed("*.py")


def _tree(module: str) -> ast.Module:
    return ast.parse((ROOT / module).read_text(encoding="utf-8"), filename=module)


def _definitions(module: str) -> Iterator[ast.FunctionDef | ast.AsyncFunctionDef | ast.ClassDef]:
    for node in ast.walk(_tree(module)):
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef | ast.ClassDef):
            yield node


def test_the_package_is_seen() -> None:
    assert "followup/__init__.py" in MODULES


def test_the_top_level_holds_nothing_else() -> None:
    tops = {name.split("/")[0] for name in _committed()}
    assert {top for top in tops if not top.startswith(".")} <= TOP_LEVEL


@pytest.mark.parametrize("module", MODULES)
def test_a_module_says_what_it_is_for(module: str) -> None:
    assert (ast.get_docstring(_tree(module)) or "").strip()


@pytest.mark.parametrize("module", MODULES)
def test_nothing_is_too_long_to_be_read(module: str) -> None:
    assert len((ROOT / module).read_text(encoding="utf-8").splitlines()) <= LINES_IN_A_MODULE
    functions = [node for node in _definitions(module) if not isinstance(node, ast.ClassDef)]
    lengths = {node.name: (node.end_lineno or node.lineno) - node.lineno + 1 for node in functions}
    assert {name: length for name, length in lengths.items() if length > LINES_IN_A_FUNCTION} == {}


@pytest.mark.parametrize("module", MODULES)
def test_names_say_something(module: str) -> None:
    parts = Path(module).with_suffix("").parts
    if not any(module.startswith(folder) for folder in PEOPLE):
        assert not EMPTY_NAMES & set(parts)
    classes = [node.name for node in _definitions(module) if isinstance(node, ast.ClassDef)]
    endings = tuple(name.capitalize() for name in EMPTY_NAMES)
    assert [name for name in classes if name.endswith(endings)] == []


def test_every_folder_of_tests_is_a_package() -> None:
    # Two files of one name in folders that are no packages would hide each other from pytest.
    folders = {Path(module).parent for module in MODULES if module.startswith("tests/")}
    assert {folder.as_posix() for folder in folders if not (ROOT / folder / "__init__.py").exists()} == set()


@pytest.mark.parametrize("module", MODULES)
def test_a_silenced_check_has_its_reason_beside_it(module: str) -> None:
    lines = (ROOT / module).read_text(encoding="utf-8").splitlines()
    bare = []
    for number, line in enumerate(lines, start=1):
        found = SILENCED.search(line)
        above = lines[number - 2].strip() if number > 1 else ""
        has_reason = found and ("#" in line[found.end() :] or above.startswith("#") or "reason=" in line)
        if found and not has_reason:
            bare.append(f"{module}:{number}: {line.strip()}")
    assert bare == []


def test_nothing_names_a_folder_of_somebodys_machine() -> None:
    named = []
    for name in _committed():
        try:
            text = (ROOT / name).read_text(encoding="utf-8")
        except UnicodeDecodeError:
            continue  # a picture
        found = [line for line in text.splitlines() if PATH_OF_A_MACHINE.search(line)]
        named += [f"{name}: {line.strip()[:100]}" for line in found if "PATH_OF_A_MACHINE" not in line]
    assert named == []
