"""A browser for the tests of the pages: Debian's chromium, whoever runs it, without network chatter of its own.

Every test in this folder carries the mark `browser`, so that the group can be run or left out as a whole.
`page`, `context` and `browser` are pytest-playwright's.
"""

import shutil
from pathlib import Path
from typing import Any

import pytest

NAMES = ("chromium", "chromium-browser", "google-chrome")
# The pages under test come from this machine; the browser's own traffic has no place in a test.
ARGUMENTS = [
    "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
    "--disable-background-networking", "--disable-component-update", "--disable-sync", "--disable-dev-shm-usage",
]  # fmt: skip


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Marks what lies in this folder."""
    here = Path(__file__).parent
    for item in items:
        if here in item.path.parents:
            item.add_marker(pytest.mark.browser)


@pytest.fixture(scope="session")
def chromium() -> str:
    """The path of the browser."""
    for name in NAMES:
        found = shutil.which(name)
        if found:
            return found
    # Pages can be read and sent without a browser; what only a browser shows cannot be tested without one.
    pytest.skip("no chromium here (apt-get install chromium)")


@pytest.fixture(scope="session")
def browser_type_launch_args(browser_type_launch_args: dict[str, Any], chromium: str) -> dict[str, Any]:
    """How pytest-playwright starts the browser."""
    return {**browser_type_launch_args, "executable_path": chromium, "args": ARGUMENTS}
