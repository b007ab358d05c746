"""Years told in words made digits before words are looked at: `march twelve twenty twenty seven`."""

from __future__ import annotations

import re

_ONES = {"one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9}
_YEAR = re.compile(
    r"(?P<before>\b(?:jan\w*|feb\w*|mar(?:ch)?|apr\w*|may|june?|july?|aug\w*|sep\w*|oct\w*|nov\w*|dec\w*|first|second|"
    r"third|\w*th|\d+(?:st|nd|rd)?|of|in|year),? )(?:two thousand(?: and)?|twenty)[ -](?P<tens>twenty|thirty)"
    rf"(?:[ -](?P<ones>{'|'.join(_ONES)}))?\b(?! (?:miles|mi|km|thousand|hundred|dollars))"
)


def with_years(text: str) -> str:
    """The text with the years 2020 to 2039 that it tells in words written as numbers."""
    return _YEAR.sub(_digits, text) if "twenty" in text or "thousand" in text else text


def _digits(match: re.Match[str]) -> str:
    return match["before"] + str(2000 + (20 if match["tens"] == "twenty" else 30) + _ONES.get(match["ones"] or "", 0))
