"""The README says what is true: its settings, commands and pictures exist, and the job stands first."""

from __future__ import annotations

import re
from pathlib import Path

from followup.cli import COMMANDS
from followup.settings import explained

ROOT = Path(__file__).resolve().parent.parent
README = (ROOT / "README.md").read_text(encoding="utf-8")


def test_every_setting_is_explained() -> None:
    for variable, default, words in explained():
        shown = f"`{default}`" if default else ""
        assert f"| `{variable}` | {shown} | {words} |" in README, variable


def test_every_command_is_named() -> None:
    for name in COMMANDS:
        assert f"followup {name}" in README or f"deploy/{name}" in README, name


def test_every_picture_is_there() -> None:
    pictures = re.findall(r"!\[[^\]]+\]\(([^)]+)\)", README)
    assert pictures
    assert [one for one in pictures if not (ROOT / one).is_file()] == []


def test_counsel_is_named_on_the_first_screen() -> None:
    assert "ask your own counsel" in README[:1800]
