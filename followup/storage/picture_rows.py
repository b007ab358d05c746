"""Rows of a car's work, advice and rests as values of a picture, each at the single positions that windows stand at."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from followup.core.item import Catalogue
from followup.core.planning.picture import Rest
from followup.core.vehicle import AXLES
from followup.core.visit import Recommendation, Work
from followup.storage.rows import Row


def _places(catalogue: Catalogue, item: str, position: str) -> tuple[str, ...]:
    """Work and advice may name an axle or the whole car; windows stand at single positions."""
    known = catalogue[item].positions if item in catalogue else ("",)
    if position in known:
        return (position,)
    inside = AXLES.get(position, ()) if position else known
    return tuple(one for one in known if one in inside) or (position,)


def work_of(catalogue: Catalogue, found: Iterable[Row]) -> Iterator[Work]:
    for row in found:
        moved = tuple(sorted((row["moved"] or {}).items()))
        for place in _places(catalogue, row["item"], row["position"]):
            yield Work(row["item"], place, row["did"], row["on"], row["odometer_miles"], moved)


def advice_of(catalogue: Catalogue, found: Iterable[Row]) -> Iterator[Recommendation]:
    for row in found:
        for place in _places(catalogue, row["item"], row["position"]):
            yield Recommendation(
                row["item"], place, row["decision"], row["on"], row["because"], row["until"], row["told_by"]
            )


def rests_of(catalogue: Catalogue, found: Iterable[Row]) -> Iterator[Rest]:
    for row in found:
        for place in _places(catalogue, row["item"], row["position"]):
            yield Rest(row["item"], place, row["because"], row["from_on"], row["until"])
