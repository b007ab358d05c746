"""The named points at which trials end a process: each stands in the program once or more, and none is misspelled."""

from __future__ import annotations

import re

import pytest

from followup import points
from tests.ground.copies import ROOT

REACHED = re.findall(
    r'reached\("([^"]+)"\)',
    "".join(path.read_text(encoding="utf-8") for path in (ROOT / "followup").rglob("*.py")),
)


def test_every_point_is_reached_and_named() -> None:
    assert set(REACHED) == {*points.POINTS, *points.MOVING, *points.MIGRATING}
    assert len(points.POINTS) >= 8


@pytest.fixture
def heard() -> list[str]:
    return []


def test_nobody_listens_unless_asked(heard: list[str]) -> None:
    points.reached("answered")
    points.listen(heard.append)
    try:
        points.reached("looked")
    finally:
        points.listen(None)
    points.reached("answered")
    assert heard == ["looked"]
