"""The customers of a simulated shop: invented numbers (555-0100 to 555-0199 of each area), languages, consents."""

from __future__ import annotations

from datetime import date
from typing import Any

# Illinois, its neighbors, and then further away: a few customers have kept a number of where they came from.
_AREAS = (
    224, 309, 312, 331, 618, 630, 708, 773, 815, 847, 872, 262, 414, 608, 920, 319, 515, 563, 641, 314, 573, 636, 816,
    612, 651, 763, 952, 417, 660, 507, 218, 320, 712, 715, 206, 212, 303, 404, 505, 602, 702, 801, 901, 205, 251, 334,
    402, 501, 601, 662, 701, 605, 504, 225, 318, 337, 615, 731, 832,
)  # fmt: skip
_NUMBERS_AN_AREA = 100
MOST = len(_AREAS) * _NUMBERS_AN_AREA


def phone_of(customer: int) -> str:
    """The number of a customer by their place in the crowd."""
    return f"+1{_AREAS[customer % len(_AREAS)]}55501{customer // len(_AREAS):02d}"


def language_of(customer: int) -> str:
    """One in five reads Spanish."""
    return "es" if customer % 5 == 0 else "en"


def consent_of(customer: int, given_on: date) -> dict[str, Any] | None:
    """Some agreed to nothing, some only to texts about their visits."""
    if customer % 17 == 3:
        return None
    language = language_of(customer)
    return {
        "covers": ["visits"] if customer % 25 == 7 else ["visits", "upkeep", "offers"],
        "given_on": given_on.isoformat(), "how": "tablet", "words": "I agree." if language == "en" else "Acepto.",
        "words_version": "1", "language": language, "number_is_own_and_adult": True,
    }  # fmt: skip
