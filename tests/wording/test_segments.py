"""Segments against 37 cases worked out by hand from 3GPP TS 23.038 (alphabet) and TS 23.040 (concatenation)."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from followup.core.segments import BASIC, EXTENSION, beyond_gsm7, plain_characters, segments

S_COMMA = "ș"
EMOJI = "\U0001f600"
EURO = "€"
# Text, encoding, septets or UTF-16 units, segments. Source of each: 3GPP TS 23.038, 6.2.1 and 6.1.2.1.1; TS 23.040.
VECTORS = [
    ("a" * 160, "GSM-7", 160, 1),
    ("a" * 161, "GSM-7", 161, 2),
    ("a" * 306, "GSM-7", 306, 2),
    ("a" * 307, "GSM-7", 307, 3),
    ("a" * 1530, "GSM-7", 1530, 10),
    ("a" * 1531, "GSM-7", 1531, 11),
    (EURO * 80, "GSM-7", 160, 1),
    (EURO * 81, "GSM-7", 162, 2),
    ("a" * 158 + EURO, "GSM-7", 160, 1),
    ("a" * 159 + EURO, "GSM-7", 161, 2),
    ("a" * 152 + EURO + "a" * 152, "GSM-7", 306, 3),  # the escape may not straddle
    (S_COMMA * 70, "UCS-2", 70, 1),
    (S_COMMA * 71, "UCS-2", 71, 2),
    (S_COMMA * 134, "UCS-2", 134, 2),
    (S_COMMA * 135, "UCS-2", 135, 3),
    (EMOJI * 35, "UCS-2", 70, 1),
    (EMOJI * 36, "UCS-2", 72, 2),
    (S_COMMA * 66 + EMOJI + S_COMMA * 66, "UCS-2", 134, 3),  # the surrogate pair may not straddle
    ("Don\u2019t", "UCS-2", 5, 1),
    ("8\u20139", "UCS-2", 3, 1),
    ("café", "GSM-7", 4, 1),
    ("naïve", "UCS-2", 5, 1),
    ("mañana", "GSM-7", 6, 1),
    ("a`b", "UCS-2", 3, 1),
    ("a\tb", "UCS-2", 3, 1),
    ("ç", "UCS-2", 1, 1),
    ("Ç", "GSM-7", 1, 1),
    ("[x]{y}|z~^\\", "GSM-7", 19, 1),
    ("a\nb", "GSM-7", 3, 1),
    ("a\u00a0b", "UCS-2", 3, 1),
    ("½", "UCS-2", 1, 1),
    ("20°", "UCS-2", 3, 1),
    ("\u2022", "UCS-2", 1, 1),
    ("®", "UCS-2", 1, 1),
    ("£5", "GSM-7", 2, 1),
    ("¥", "GSM-7", 1, 1),
    ("a@b", "GSM-7", 3, 1),
]


def test_there_are_all_37_cases() -> None:
    assert len(VECTORS) == 37


@pytest.mark.parametrize(("text", "encoding", "units", "count"), VECTORS)
def test_segments_as_the_standard_cuts_them(text: str, encoding: str, units: int, count: int) -> None:
    cut = segments(text)
    assert (cut.encoding, cut.units, cut.count) == (encoding, units, count)


def test_the_alphabet_has_the_size_of_the_standard() -> None:
    """TS 23.038, 6.2.1: 128 codes, one of them the escape; the extension table of 6.2.1.1 has ten characters."""
    assert len(BASIC) == 127
    assert len(EXTENSION) == 10


@given(st.text(max_size=700))
def test_parts_never_hold_more_than_they_can(text: str) -> None:
    cut = segments(text)
    alone, part = (160, 153) if cut.encoding == "GSM-7" else (70, 67)
    assert cut.count >= 1
    assert (cut.count == 1) == (cut.units <= alone)
    # Each part but the last is full, or short by the one unit that a pair did not fit into.
    if cut.count > 1:
        assert (cut.count - 1) * (part - 1) < cut.units <= cut.count * part


@pytest.mark.parametrize(
    "typed",
    ["Don\u2019t", "\u201cyes\u201d", "8\u20139", "8\u2014 9", "a\u00a0b", "a\u202fb", "\u2022 a", "a\u2026", "a\tb",
     "a`b", "½", "®", "a\u200bb", "a\u00adb"],
)  # fmt: skip
def test_typographic_characters_become_plain_ones(typed: str) -> None:
    assert segments(typed).encoding == "UCS-2"
    assert segments(plain_characters(typed)).encoding == "GSM-7"


def test_accents_that_the_alphabet_lacks_stay_and_are_reported() -> None:
    """TS 23.038 has é, ñ, ü, à, ¿, ¡ but no á, í, ó, ú."""
    assert beyond_gsm7("¿Mañana a las 5? ¡Sí! El sábado después, señor Müller: à ú ó á") == ("í", "á", "ú", "ó")
    assert plain_characters("sábado") == "sábado"
