"""Rules of the house that import-linter and ruff cannot say, read from the source with `ast`.

Each library has one room that knows it; `core` takes its imports from an allow list; nobody but `clock.py` asks for
the time. Each rule gives its findings as `path:line: words`.
"""

import ast
import sys
from collections.abc import Iterator
from pathlib import Path

# What the standard library offers without input or output, clock or random source.
PURE_STANDARD_LIBRARY = {
    "__future__", "abc", "bisect", "calendar", "collections", "copy", "csv", "dataclasses", "datetime", "decimal",
    "difflib", "enum", "fractions", "functools", "hashlib", "heapq", "itertools", "json", "math", "numbers", "operator",
    "re", "statistics", "string", "types", "typing", "unicodedata", "zoneinfo",
}  # fmt: skip
PURE_LIBRARIES = {
    "numpy", "scipy.special", "scipy.optimize", "scipy.linalg", "scipy.sparse", "dateutil.relativedelta",
    "dateutil.rrule", "dateutil.easter", "rapidfuzz", "holidays",
}  # fmt: skip
MAY_USE_PYDANTIC = {"followup/core/inspection.py", "followup/core/replies/contract.py"}

# Who alone may import a library: a folder or a file.
# Some stand beside what is measured against them, made of the libraries alone; the bench of the sweep copies shops by
# statements of its own and listens to how long those of the program's transactions take.
MADE_OF_LIBRARIES = (
    "followup/rehearsal/bench/bare_hook.py", "followup/rehearsal/bench/bare_sweep.py",
    "followup/rehearsal/bench/checks.py", "followup/rehearsal/bench/sweep_day.py",
    "followup/rehearsal/bench/sweep_fleet.py",
)  # fmt: skip
OWNERS = {
    "sqlalchemy": "followup/storage/", "alembic": "followup/storage/", "sqlite3": "followup/storage/",
    "psycopg": "followup/storage/",
    "twilio": "followup/transports/twilio.py",
    "flask": "followup/web/", "flask_login": "followup/web/", "flask_wtf": "followup/web/", "wtforms": "followup/web/",
    "werkzeug": "followup/web/",
    "apscheduler": "followup/scheduler.py",
    "icalendar": "followup/wording/calendar_file.py",
}  # fmt: skip

# Calls that ask for the time (module or class, name). `time.monotonic` and its like measure how long something took;
# only the bench does that.
ASKS_FOR_THE_TIME = {
    ("datetime", "now"), ("datetime", "utcnow"), ("datetime", "today"), ("date", "today"),
    ("time", "time"), ("time", "time_ns"), ("time", "localtime"), ("time", "gmtime"), ("func", "now"),
    ("func", "current_timestamp"), ("func", "localtimestamp"),
}  # fmt: skip
MEASURES_DURATION = {"monotonic", "monotonic_ns", "perf_counter", "perf_counter_ns", "process_time"}
READS_THE_TIME = {"followup/clock.py"}
# In core even numpy's own random source is out: seeded generators come in as arguments.
RANDOM_SOURCES = {"numpy.random.default_rng", "numpy.random.seed", "np.random.default_rng", "np.random.seed"}


def findings(root: Path) -> list[str]:
    """All findings in the package `followup` under `root`."""
    found = []
    for path in sorted((root / "followup").rglob("*.py")):
        name = path.relative_to(root).as_posix()
        tree = ast.parse(path.read_text(encoding="utf-8"), filename=name)
        found += [f"{name}:{line}: {words}" for line, words in _foreign_libraries(name, tree)]
        if name.startswith("followup/core/"):
            found += [f"{name}:{line}: {words}" for line, words in _impure_imports(name, tree)]
            found += [f"{name}:{line}: {words}" for line, words in _side_doors(tree)]
        if name not in READS_THE_TIME:
            found += [f"{name}:{line}: {words}" for line, words in _time_asked(name, tree)]
    return found


def _imported(tree: ast.Module) -> Iterator[tuple[int, str]]:
    """Every module (or name taken from one) that is imported anywhere, in functions too, with its line."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            for alias in node.names:
                yield node.lineno, alias.name
        elif isinstance(node, ast.ImportFrom):
            for alias in node.names:
                yield node.lineno, f"{node.module}.{alias.name}" if node.level == 0 else f".{alias.name}"


def _is_within(name: str, allowed: set[str]) -> bool:
    return any(name == module or name.startswith(f"{module}.") for module in allowed)


def _foreign_libraries(name: str, tree: ast.Module) -> Iterator[tuple[int, str]]:
    for line, imported in _imported(tree):
        library = imported.split(".")[0]
        owner = OWNERS.get(library)
        if owner and not name.startswith((owner, *MADE_OF_LIBRARIES)):
            yield line, f"only {owner} may import {library}"


def _impure_imports(name: str, tree: ast.Module) -> Iterator[tuple[int, str]]:
    for line, imported in _imported(tree):
        first = imported.split(".")[0]
        if first == "pydantic":
            if name not in MAY_USE_PYDANTIC:
                yield line, "core uses pydantic only for its two contracts"
        elif first in ("followup", ""):
            continue  # import-linter's
        elif first in sys.stdlib_module_names:
            if not _is_within(imported, PURE_STANDARD_LIBRARY):
                yield line, f"core may not import {imported}"
        elif not _is_within(imported, PURE_LIBRARIES) or imported.startswith("numpy.random.default"):
            yield line, f"core may not import {imported}"


def _side_doors(tree: ast.Module) -> Iterator[tuple[int, str]]:
    """Files, prompts and random sources that need no import."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Call):
            called = ast.unparse(node.func)
            if called in {"open", "input", "print", "__import__", "exec", "eval"}:
                yield node.lineno, f"core may not call {called}()"
            if called in RANDOM_SOURCES:
                yield node.lineno, "core takes its seeded generator as an argument"


def _time_asked(name: str, tree: ast.Module) -> Iterator[tuple[int, str]]:
    may_measure = "bench" in name
    for node in ast.walk(tree):
        # Also where it is only named, as in `default_factory=datetime.now`.
        if isinstance(node, ast.Attribute):
            owner = ast.unparse(node.value).split(".")[-1]
            if (owner, node.attr) in ASKS_FOR_THE_TIME:
                yield node.lineno, f"only clock.py asks {owner}.{node.attr} for the time"
            if owner == "time" and node.attr in MEASURES_DURATION and not may_measure:
                yield node.lineno, f"only the bench measures with time.{node.attr}"
        elif isinstance(node, ast.ImportFrom) and node.module == "time":
            for alias in node.names:
                if ("time", alias.name) in ASKS_FOR_THE_TIME or alias.name in MEASURES_DURATION:
                    yield node.lineno, f"import time, not {alias.name} from it, so that its use can be seen"
