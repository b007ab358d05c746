"""`choose`: the customer picks one of the offered times; which one is read in `offers.py`."""

from __future__ import annotations

from followup.core.replies.said import Said

CODE = "choose"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "the second one",
        "first one works",
        "the earlier one pls",
        "last one",
        "either is fine",
    ),
    "es": (
        "la segunda",
        "la primera opcion por favor",
        "la ultima",
        "cualquiera de las dos",
        "la mas temprano",
    ),
}


def holds(said: Said) -> bool:
    """Whether the text fits one or several of the offered times."""
    return said.picked > 0
