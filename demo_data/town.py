"""The people and cars of Wrenfield, an invented town in Illinois, and the dice that everything here is drawn with.

Names are plain and invented; numbers are from the ranges kept for fiction (555-0100 to 555-0199).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from random import Random
from typing import Any, TypeVar

TODAY = date(2026, 11, 23)
"""The Monday on which the demo begins."""

T = TypeVar("T")


class Dice:
    """Draws that come out the same with every Python: only `Random.random` is promised to."""

    def __init__(self, seed: int) -> None:
        self._draw = Random(seed).random

    def chance(self, share: float) -> bool:
        """True in that share of all draws."""
        return self._draw() < share

    def between(self, least: float, most: float) -> float:
        """Evenly drawn."""
        return least + (most - least) * self._draw()

    def whole(self, least: int, most: int) -> int:
        """Evenly drawn from whole numbers, both ends included."""
        return least + int((most - least + 1) * self._draw())

    def one_of(self, choices: Sequence[T]) -> T:
        """One of them."""
        return choices[int(len(choices) * self._draw())]

    def near(self, middle: float, spread: float) -> float:
        """Normally drawn, near enough: twelve even draws."""
        return middle + spread * (sum(self._draw() for _ in range(12)) - 6)

    def about(self, median: float, log_spread: float) -> float:
        """Log-normally drawn."""
        return median * math.exp(self.near(0, log_spread))


ENGLISH = (
    "Marta Quill", "Devon Ashby", "Priya Nair", "Walter Finch", "Leila Farouk", "Owen Hartley", "Grace Okafor",
    "Tomas Novak", "Hannah Weiss", "Samuel Boone", "Mei Tan", "Caleb Rowan", "Ingrid Solberg", "Darnell Pruitt",
    "Anika Rao", "Peter Lindqvist", "Rosalind Hume", "Kofi Mensah", "Bridget Malloy", "Yusuf Demir", "Clara Benning",
    "Elijah Stroud", "Naomi Feld", "Victor Hale", "Sunita Iyer", "Gordon Pike", "Aisha Bello", "Lucas Brandt",
    "Edith Marlow", "Jamal Whitcomb", "Nora Kessler", "Hiro Maeda", "Fiona Carrick", "Andre Toussaint", "Ruth Abrams",
    "Dale Hutchins", "Zofia Kowal", "Marcus Teller", "Lin Zhao", "Beth Corrigan", "Ravi Pillai", "Joan Eastman",
    "Tyrone Gage", "Emilia Stern", "Curtis Vane", "Olga Petrenko", "Simon Achterberg",
)  # fmt: skip
SPANISH = (
    "Rosa Villanueva", "Javier Montes", "Lucía Arroyo", "Ernesto Salcedo", "Carmen Ibarra", "Mateo Quintero",
    "Pilar Esquivel", "Hugo Becerra", "Silvia Camarena", "Andrés Luján", "Teresa Barragán", "Óscar Medrano",
    "Elena Zavala", "Raúl Cisneros", "Inés Palomares", "Diego Tovar", "Marisol Granados",
)  # fmt: skip
# Most are of the town; a few people kept the number of where they came from.
AREA_CODES = ("217",) * 9 + ("309", "618", "815", "312", "314", "608", "206", "602", "212")

# label, Spanish label, class, driven wheels, tire size, powertrain
KINDS = (
    ("sedan", "auto", "car", "front", "205/55R16", "gasoline"),
    ("sedan", "auto", "car", "front", "215/55R17", "gasoline"),
    ("hatchback", "compacto", "car", "front", "195/65R15", "gasoline"),
    ("wagon", "auto familiar", "car", "all", "225/50R17", "gasoline"),
    ("compact SUV", "SUV compacta", "suv", "all", "225/60R18", "gasoline"),
    ("compact SUV", "SUV compacta", "suv", "front", "225/65R17", "gasoline"),
    ("SUV", "SUV", "suv", "all", "255/60R19", "gasoline"),
    ("pickup", "camioneta pickup", "pickup", "rear", "265/70R17", "gasoline"),
    ("pickup", "camioneta pickup", "pickup", "all", "275/65R18", "diesel"),
    ("minivan", "minivan", "van", "front", "235/60R17", "gasoline"),
    ("sedan", "auto", "car", "front", "205/55R16", "hybrid"),
    ("compact SUV", "SUV compacta", "suv", "all", "225/60R18", "hybrid"),
    ("electric hatchback", "eléctrico", "car", "front", "215/50R17", "electric"),
    ("electric SUV", "SUV eléctrica", "suv", "all", "255/45R20", "electric"),
    ("plug-in SUV", "SUV enchufable", "suv", "all", "235/60R18", "plug_in"),
)
# {o} is the ending that goes with the noun: "auto rojo", "camioneta roja".
FEMININE = ("SUV", "camioneta", "minivan")
COLORS = (
    ("blue", "azul"), ("gray", "gris"), ("silver", "plata"), ("white", "blanc{o}"), ("black", "negr{o}"),
    ("red", "roj{o}"), ("green", "verde"),
)  # fmt: skip
HOW = ("signed_paper",) * 6 + ("tablet",) * 5 + ("web_form", "text_in", "spoken", "imported_unproven")
WORDS = {
    "en": "I agree that Wrenfield Garage may send me automated texts at this number about {what}. Agreeing is not a "
    "condition of any purchase. About 2 texts a month; message and data rates may apply. Reply HELP for help, STOP to "
    "end.",
    "es": "Acepto que Wrenfield Garage me envíe mensajes automáticos a este número sobre {what}. Aceptar no es "
    "condición para comprar. Unos 2 mensajes al mes; pueden aplicar tarifas. Responda AYUDA para ayuda, ALTO para "
    "terminar.",
}
WHAT = {
    "en": {"visits": "my visits", "upkeep": "upkeep of my car", "offers": "free services and offers"},
    "es": {"visits": "mis visitas", "upkeep": "el mantenimiento de mi auto", "offers": "servicios gratis y ofertas"},
}


@dataclass
class Owner:
    """A customer as the lines tell it; consent is told once, with its first line."""

    told: dict[str, Any]
    consent: dict[str, Any] | None

    @property
    def language(self) -> str:
        """The language they are written to in."""
        return str(self.told.get("language", "en"))


def owners_of(dice: Dice) -> list[Owner]:
    """All customers: most with a number and consent, some without; a couple that shares one number; one fleet."""
    names = [(name, "en") for name in ENGLISH] + [(name, "es") for name in SPANISH]
    owners = []
    for place, (name, language) in enumerate(names):
        code = dice.one_of(AREA_CODES)
        told = {"id": f"C-{101 + place}", "name": name, "phone": f"+1{code}55501{10 + place}", "language": language}
        owners.append(Owner(told, _consent(dice, language)))
    share_a_number(owners[3], owners[18])
    for quiet in (9, 31):
        del owners[quiet].told["phone"]
        owners[quiet].consent = None
    fleet = {"id": "C-190", "name": "Wrenfield Bakery", "phone": "+12175550188", "language": "en", "fleet": True}
    return [*owners, Owner(fleet, _agreed("en", "signed_paper", ("visits", "upkeep")))]


def share_a_number(one: Owner, other: Owner) -> None:
    """Two people, each with a car, on one number."""
    other.told["phone"], other.told["language"] = one.told["phone"], one.told["language"]
    one.consent = other.consent = _agreed("en", "tablet", ("visits", "upkeep", "offers"))


def _consent(dice: Dice, language: str) -> dict[str, Any] | None:
    if dice.chance(0.1):
        return None
    covers: tuple[str, ...] = ("visits", "upkeep", "offers")
    if dice.chance(0.3):
        covers = ("visits", "upkeep") if dice.chance(0.7) else ("visits",)
    how = dice.one_of(HOW)
    return _agreed(language, how, ("visits",) if how == "spoken" else covers)


def _agreed(language: str, how: str, covers: tuple[str, ...]) -> dict[str, Any]:
    what = ", ".join(WHAT[language][cover] for cover in covers)
    told: dict[str, Any] = {"covers": list(covers), "how": how, "language": language}
    if how != "imported_unproven":
        words = WORDS[language].format(what=what)
        told |= {"words": words, "words_version": "2024-01", "number_is_own_and_adult": how != "spoken"}
    return told


def cars_of(dice: Dice, owners: list[Owner]) -> list[tuple[Owner, dict[str, Any]]]:
    """Who has which car: one each, a second for some, five vans of the fleet."""
    kinds = list(KINDS) + list(KINDS[:10]) * 3 + list(KINDS)
    holders = [*owners[:-1], *(owners[place] for place in (0, 5, 12, 25, 36, 47, 50, 55, 58, 60)), *owners[-1:] * 5]
    cars = []
    for place, owner in enumerate(holders):
        kind = kinds[(place * 7) % len(kinds)]
        if owner.told.get("fleet"):
            kind = ("van", "van", "van", "rear", "225/75R16", "diesel" if place % 2 else "gasoline")
        cars.append((owner, _car(dice, place, owner, kind)))
    return cars


def _car(dice: Dice, place: int, owner: Owner, kind: tuple[str, ...]) -> dict[str, Any]:
    noun, spanish, vehicle_class, driven, size, powertrain = kind
    first_used_on = TODAY - timedelta(days=dice.whole(900, 900 + (2200 if powertrain != "gasoline" else 3600)))
    color, color_es = dice.one_of(COLORS)
    label = f"{first_used_on.year} {color} {noun}"
    if owner.language == "es":
        ending = "a" if spanish.startswith(FEMININE) else "o"
        label = f"{spanish} {color_es.format(o=ending)} {first_used_on.year}"
    if owner.told.get("fleet"):
        label = f"unit {place - 60}, {color} van"
    is_old_and_small = vehicle_class == "car" and powertrain == "gasoline" and first_used_on.year < 2020
    run_flat, directional = place in (2, 33), place in (5, 41)
    told: dict[str, Any] = {
        "id": f"V-{201 + place}", "label": label, "class": vehicle_class, "driven": driven,
        "first_used_on": first_used_on.isoformat(), "run_flat": run_flat,
        "oil_check": "none" if powertrain == "electric" else "display" if place % 6 == 0 else "dipstick",
        "powertrain": powertrain, "plate": f"TEST {100 + place}",
        "rear_brakes": "drum" if is_old_and_small else "disc",
        "parking_brake": "electric" if first_used_on.year >= 2020 else "hand",
        "tire_size_front": size, "tire_size_rear": "245/40R18" if directional and place == 41 else size,
        "directional": directional,
    }  # fmt: skip
    return told
