"""A copy of the package in a folder of its own, in which a break can be planted, and the checks that run over it."""

import shutil
import subprocess
import sys
from pathlib import Path

from tests.ground import rules

ROOT = Path(__file__).resolve().parents[2]


def copy_package(to: Path) -> Path:
    """Copies the package's sources and the project file (nothing else) and gives the folder."""
    shutil.copytree(
        ROOT / "followup", to / "followup", ignore=shutil.ignore_patterns("__pycache__", "*.html", "static")
    )
    shutil.copy(ROOT / "pyproject.toml", to)
    return to


def plant(root: Path, module: str, code: str) -> None:
    """Adds `code` at the end of `module` (a path); a module that is not there begins with it."""
    path = root / module
    path.parent.mkdir(parents=True, exist_ok=True)
    for folder in path.relative_to(root).parents[:-1]:
        if not (root / folder / "__init__.py").exists():
            (root / folder / "__init__.py").write_text('"""Planted."""\n', encoding="utf-8")
    there = path.read_text(encoding="utf-8") if path.exists() else '"""Planted."""\n'
    path.write_text(f"{there}\n{code}\n", encoding="utf-8")


def contracts(root: Path) -> str:
    """What import-linter says of the copy; empty if it keeps every contract."""
    # It looks for the package in the folder where it runs, before the installed one.
    program = "from importlinter.cli import lint_imports_command; lint_imports_command()"
    return _said_by([sys.executable, "-c", program, "--no-cache", "--no-logo"], root)


def clock(root: Path) -> str:
    """What ruff says of the copy's reading of the time; empty if nothing."""
    select = ["--select", "DTZ,TID251", "--no-cache", "--quiet", "--output-format=concise"]
    return _said_by([sys.executable, "-m", "ruff", "check", *select, "followup"], root)


def house_rules(root: Path) -> str:
    """What our own reading of the source says of the copy; empty if nothing."""
    return "\n".join(rules.findings(root))


def _said_by(command: list[str], root: Path) -> str:
    done = subprocess.run(command, cwd=root, capture_output=True, text=True, timeout=300)
    return done.stdout + done.stderr if done.returncode else ""
