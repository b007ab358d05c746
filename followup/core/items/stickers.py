"""Stickers with a month on them: state inspection, emissions, registration."""

from __future__ import annotations

from followup.core.item import Dated, Field, Item, Job
from followup.core.vehicle import POWERTRAINS


def _sticker(code: str, words: str, work: str, powertrains: tuple[str, ...] = POWERTRAINS) -> Item:
    return Item(
        code=code,
        words=words,
        part="reception",
        fields=(Field("good_until", "month", "Month on the sticker"),),
        models=(Dated("good_until", notice_days=45),),
        job=Job(work, "general", 0.5),
        powertrains=powertrains,
    )


ITEMS = (
    _sticker("inspection_sticker", "Inspection sticker", "do the state inspection"),
    _sticker(
        "emissions_sticker",
        "Emissions sticker",
        "do the emissions test",
        tuple(one for one in POWERTRAINS if one != "electric"),
    ),
    _sticker("registration_sticker", "Registration sticker", "look at the registration"),
)
