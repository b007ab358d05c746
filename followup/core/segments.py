"""How a text is cut into SMS segments, and which characters cost more than they are worth.

Source: 3GPP TS 23.038 (the 7-bit default alphabet and its extension table) and TS 23.040 (concatenation): 160
septets or 70 UTF-16 units alone, 153 or 67 a part; an escape pair or a surrogate pair never straddles two parts.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import Literal

BASIC = frozenset(
    "@£$¥èéùìòÇ\nØø\rÅåΔ_ΦΓΛΩΠΨΣΘΞÆæßÉ !\"#¤%&'()*+,-./0123456789:;<=>?"
    "¡ABCDEFGHIJKLMNOPQRSTUVWXYZÄÖÑÜ§¿abcdefghijklmnopqrstuvwxyzäöñüà"
)
EXTENSION = frozenset("\f^{}\\[~]|€")

# What editors and phones put in place of plain characters; each would turn the whole text into UCS-2.
_TYPOGRAPHIC = {
    "‘": "'", "’": "'", "‚": "'", "‛": "'", "′": "'", "`": "'", "´": "'",
    "“": '"', "”": '"', "„": '"', "‟": '"', "″": '"', "«": '"', "»": '"',
    "‐": "-", "‑": "-", "‒": "-", "–": "-", "—": "-", "―": "-", "−": "-",
    "…": "...", "•": "-", "·": "-", "‣": "-", "●": "-",
    "\u00a0": " ", "\u2007": " ", "\u2009": " ", "\u200a": " ", "\u2002": " ", "\u2003": " ", "\u202f": " ",
    "\t": " ", "\u2028": "\n", "\u2029": "\n",
    "\u200b": "", "\u200c": "", "\u200e": "", "\u200f": "", "\ufeff": "", "\u00ad": "", "\u2060": "",
    "½": "1/2", "¼": "1/4", "¾": "3/4", "×": "x", "º": "o", "ª": "a", "®": "", "™": "", "©": "",
}  # fmt: skip
_TO_PLAIN = str.maketrans(_TYPOGRAPHIC)


@dataclass(frozen=True)
class Segments:
    """`units` are septets (GSM-7) or UTF-16 units (UCS-2); `count` is what the provider bills."""

    encoding: Literal["GSM-7", "UCS-2"]
    units: int
    count: int


@lru_cache(maxsize=256)
def segments(text: str) -> Segments:
    """How `text` travels. An empty text counts one segment, as a provider bills it."""
    if all(char in BASIC or char in EXTENSION for char in text):
        return _cut("GSM-7", [2 if char in EXTENSION else 1 for char in text], alone=160, part=153)
    return _cut("UCS-2", [2 if ord(char) > 0xFFFF else 1 for char in text], alone=70, part=67)


def _cut(encoding: Literal["GSM-7", "UCS-2"], widths: list[int], *, alone: int, part: int) -> Segments:
    units = sum(widths)
    if units <= alone:
        return Segments(encoding, units, 1)
    count, filled = 1, 0
    for width in widths:
        if filled + width > part:
            count, filled = count + 1, 0
        filled += width
    return Segments(encoding, units, count)


def plain_characters(text: str) -> str:
    """`text` with typographic quotes, dashes, spaces, bullets and the like replaced by their plain characters."""
    return text.translate(_TO_PLAIN)


def beyond_gsm7(text: str) -> tuple[str, ...]:
    """The characters of `text` that GSM-7 lacks, each once, in their order: what makes a text travel as UCS-2."""
    return tuple(dict.fromkeys(char for char in text if char not in BASIC and char not in EXTENSION))
