"""The rules of the house are in force: each break, planted in a copy of the package, is caught by the check named here.

A rule that is only written down catches nothing; a check that finds nothing in a sound copy and something in each
broken one is known to work.
"""

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

import pytest

from tests.ground import copies


@dataclass(frozen=True)
class Break:
    """One break: where it is planted, what, which check catches it, and words of its finding."""

    name: str
    planted: dict[str, str]
    caught_by: Callable[[Path], str]
    finding: str


BREAKS = [
    Break(
        "core imports storage",
        {"followup/core/text.py": "import followup.storage"},
        copies.contracts,
        "followup.core is not allowed to import followup.storage",
    ),
    Break(
        "understanding imports planning",
        {"followup/core/replies/meaning.py": "import followup.core.planning", "followup/core/planning/__init__.py": ""},
        copies.contracts,
        "followup.core.replies is not allowed to import followup.core.planning",
    ),
    Break(
        "a noun imports the catalogue",
        {"followup/core/vehicle.py": "import followup.core.items"},
        copies.contracts,
        "followup.core.vehicle is not allowed to import followup.core.items",
    ),
    Break(
        "a kind of item imports another",
        {"followup/core/items/planted_one.py": "import followup.core.items.planted_two",
         "followup/core/items/planted_two.py": ""},
        copies.contracts,
        "followup.core.items.planted_one is not allowed to import followup.core.items.planted_two",
    ),
    Break(
        "a meaning imports another",
        {"followup/core/replies/intents/planted_one.py": "import followup.core.replies.intents.planted_two",
         "followup/core/replies/intents/planted_two.py": ""},
        copies.contracts,
        "intents.planted_one is not allowed to import followup.core.replies.intents.planted_two",
    ),
    Break(
        "a workflow imports another",
        {"followup/workflows/planted_one.py": "import followup.workflows.planted_two",
         "followup/workflows/planted_two.py": ""},
        copies.contracts,
        "followup.workflows.planted_one is not allowed to import followup.workflows.planted_two",
    ),
    Break(
        "a transport imports another",
        {"followup/transports/local_phone.py": "import followup.transports.twilio"},
        copies.contracts,
        "followup.transports.local_phone is not allowed to import followup.transports.twilio",
    ),
    Break(
        "the advisor's pages import the manager's",
        {"followup/web/advisor/planted.py": "import followup.web.manager"},
        copies.contracts,
        "followup.web.advisor is not allowed to import followup.web.manager",
    ),
    Break(
        "a page reads storage past the workflows",
        {"followup/web/advisor/planted.py": "import followup.storage"},
        copies.contracts,
        "followup.storage",
    ),
    Break(
        "a transport imports storage",
        {"followup/transports/transport.py": "import followup.storage"},
        copies.contracts,
        "followup.transports is not allowed to import followup.storage",
    ),
    Break(
        "a workflow imports the joining of parts",
        {"followup/workflows/planted.py": "import followup.wiring"},
        copies.contracts,
        "followup.workflows is not allowed to import followup.wiring",
    ),
    Break(
        "a room that stands nowhere",
        {"followup/attic.py": ""},
        copies.contracts,
        "followup.attic",
    ),
    Break(
        "a cycle",
        {"followup/storage/planted_one.py": "import followup.storage.planted_two",
         "followup/storage/planted_two.py": "import followup.storage.planted_one"},
        copies.contracts,
        "No cycles BROKEN",
    ),
    Break(
        "core imports a library for pages of its own",
        {"followup/core/text.py": "import jinja2"},
        copies.house_rules,
        "core may not import jinja2",
    ),
    Break(
        "core opens the network, inside a function",
        {"followup/core/text.py": "def fetch() -> None:\n    from urllib.request import urlopen\n    urlopen"},
        copies.house_rules,
        "core may not import urllib.request.urlopen",
    ),
    Break(
        "core draws at random",
        {"followup/core/visit.py": "import random"},
        copies.house_rules,
        "core may not import random",
    ),
    Break(
        "core opens a file",
        {"followup/core/visit.py": 'TEXT = open("visit.txt").read()'},
        copies.house_rules,
        "core may not call open()",
    ),
    Break(
        "core imports a statistics package that is not on the list",
        {"followup/core/visit.py": "import scipy.stats"},
        copies.house_rules,
        "core may not import scipy.stats",
    ),
    Break(
        "a noun checks itself with pydantic",
        {"followup/core/customer.py": "import pydantic"},
        copies.house_rules,
        "core uses pydantic only for its two contracts",
    ),
    Break(
        "a workflow writes SQL",
        {"followup/workflows/planted.py": "from sqlalchemy import text"},
        copies.house_rules,
        "only followup/storage/ may import sqlalchemy",
    ),
    Break(
        "a page knows the provider",
        {"followup/web/webhook/planted.py": "import twilio.request_validator"},
        copies.house_rules,
        "only followup/transports/twilio.py may import twilio",
    ),
    Break(
        "a workflow knows the web server",
        {"followup/workflows/planted.py": "from flask import request"},
        copies.house_rules,
        "only followup/web/ may import flask",
    ),
    Break(
        "a page starts a clock",
        {"followup/web/planted.py": "import apscheduler"},
        copies.house_rules,
        "only followup/scheduler.py may import apscheduler",
    ),
    Break(
        "core reads the clock (seen by ruff)",
        {"followup/core/visit.py": "from datetime import UTC, datetime\n\nNOW = datetime.now(UTC)"},
        copies.clock,
        "TID251",
    ),
    Break(
        "a workflow takes the day (seen by our own reading)",
        {"followup/workflows/planted.py": "import datetime\n\nTODAY = datetime.date.today()"},
        copies.house_rules,
        "only clock.py asks date.today for the time",
    ),
    Break(
        "storage takes the database's clock as a default",
        {"followup/storage/planted.py": "from sqlalchemy import func\n\nDEFAULT = func.now()"},
        copies.house_rules,
        "only clock.py asks func.now for the time",
    ),
]  # fmt: skip

# Rooms that the contracts name; a copy has them even before they are built.
ROOMS = ["followup/wiring.py", "followup/workflows/__init__.py", "followup/rehearsal/__init__.py"]


def _copy(folder: Path) -> Path:
    root = copies.copy_package(folder)
    for room in ROOMS:
        if not (root / room).exists():
            copies.plant(root, room, "")
    return root


@pytest.fixture(scope="module")
def sound_copy(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return _copy(tmp_path_factory.mktemp("sound"))


@pytest.mark.parametrize(
    "check", [copies.contracts, copies.clock, copies.house_rules], ids=lambda check: check.__name__
)
def test_a_sound_copy_passes(check: Callable[[Path], str], sound_copy: Path) -> None:
    said = check(sound_copy)
    assert not said, said[-4000:]


@pytest.mark.parametrize("planted", BREAKS, ids=lambda planted: planted.name)
def test_a_planted_break_is_caught(planted: Break, tmp_path: Path) -> None:
    root = _copy(tmp_path)
    for module, code in planted.planted.items():
        copies.plant(root, module, code)
    said = " ".join(planted.caught_by(root).split())
    assert planted.finding in said, said[-2000:]
