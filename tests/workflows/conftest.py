"""The demo shop for the tests of workflows."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.workflows.demo import Demo, open_demo


@pytest.fixture
def demo(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Demo]:
    """A copy of the demo shop on its first morning."""
    opened = open_demo(tmp_path, monkeypatch)
    yield opened
    opened.house.close()
