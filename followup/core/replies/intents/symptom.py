"""`symptom`: something that may be unsafe now is reported; the word lists are in `symptoms.py`. In doubt it is one."""

from __future__ import annotations

from followup.core.replies import symptoms
from followup.core.replies.said import Said

CODE = "symptom"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "brakes feel soft all of a sudden",
        "theres a grinding noise up front",
        "car wont start this mornin",
        "yes tues works but it shakes at 60",
        "got a flat on the way home",
        "red light came on the dash",
        "smells like burning after i drive",
    ),
    "es": (
        "el pedal se va hasta el fondo",
        "hace un ruido feo cuando freno",
        "no arranca el carro",
        "si el martes, pero le sale humo",
        "se me poncho una llanta",
        "la llanta esta baja",
        "vibra mucho el volante",
    ),
}


def holds(said: Said) -> bool:
    """Whether a symptom is reported that is neither denied nor repaired."""
    return symptoms.reports(said.text)
