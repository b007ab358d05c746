"""The message templates and phrase files that come with the program: beside the package, or inside the wheel."""

from __future__ import annotations

import tomllib
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

from followup.core.text import REASON_BY_CODE

LANGUAGES = ("en", "es")


class NoSuchTemplate(Exception):
    """There is no shipped wording of that name in that language."""


@cache
def folder() -> Path:
    """Where the templates lie: inside the package in a wheel, beside it in a checkout."""
    package = Path(__file__).parents[1]
    inside = package / "_shipped" / "message_templates"
    return inside if inside.is_dir() else package.parent / "message_templates"


@cache
def shipped(language: str, reason_code: str) -> str:
    """The source of the shipped template of that reason. Raises `NoSuchTemplate`."""
    if language not in LANGUAGES or reason_code not in REASON_BY_CODE:
        raise NoSuchTemplate(f"There is no template {reason_code!r} in {language!r}.")
    return (folder() / language / f"{reason_code}.txt").read_text(encoding="utf-8")


@cache
def phrase_file(language: str, name: str) -> dict[str, Any]:
    """The parsed `<language>/<name>.toml`; do not change what is returned. Raises `NoSuchTemplate`."""
    path = folder() / language / f"{name}.toml"
    if language not in LANGUAGES or not path.is_file():
        raise NoSuchTemplate(f"There is no phrase file {name!r} in {language!r}.")
    with path.open("rb") as opened:
        return tomllib.load(opened)


@dataclass(frozen=True)
class ConsentWords:
    """The exact words of the consent form with the shop's name in them; `version` is kept with each consent.

    `visits` and `upkeep` (with offers) are its two boxes, `own_number` the third line that stands beside upkeep.
    """

    version: str
    title: str
    visits: str
    upkeep: str
    own_number: str
    notes: str


def consent_words(language: str, shop: str, shop_phone: str) -> ConsentWords:
    """The consent form's words in that language for that shop."""
    found = phrase_file(language, "consent")

    def said(key: str) -> str:
        words = str(found[key]).replace("{shop_phone}", shop_phone).replace("{shop}", shop)
        return " ".join(words.split())

    return ConsentWords(
        str(found["version"]), said("title"), said("visits"), said("upkeep"), said("own_number"), said("notes")
    )
