"""Kept windows as what planning asks of them: chances of a day, and curves."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from datetime import date
from typing import Any

from followup.core.forecast.window import DueCurve
from followup.core.items import catalogue_of
from followup.core.planning.pacing.ahead import ItemCurve
from followup.core.planning.picture import DueItem, ItemAt
from followup.core.shop import Shop
from followup.storage.rows import Row


def due_items(rows_of_car: Iterable[Row], shop: Shop, today: date) -> Iterator[DueItem]:
    """The car's windows as chances of today (`today` is the shop's day)."""
    rules, catalogue, free = shop.rules, catalogue_of(shop), shop.free_services
    for row in rows_of_car:
        body, since = row["body"], (today - row["as_of"]).days
        item = catalogue.get(row["item"])
        if item is not None and not (item.is_in_use and item.is_named):
            continue
        curve, legal = DueCurve.from_json(body["curve"]), body.get("legal")
        legal_curve = DueCurve.from_json(legal["curve"]) if legal else None
        near = _near_curve(body)
        yield DueItem(
            item=row["item"],
            position=row["position"],
            chance_by_lead=curve.chance(since + rules.lead_days),
            chance_joined=curve.chance(since + rules.lead_days + rules.joined_within_days),
            measured_on=iso_day(body.get("known_on")),
            likely_on=iso_day(body["likely"]),
            chance_legal=legal_curve.chance(since + rules.lead_days) if legal_curve else 0.0,
            is_past_legal=bool(legal and legal["is_past"]),
            is_free_top_off=bool(item and item.is_top_off_free and row["item"] in free),
            chance_near=near.chance(since + rules.lead_days) if near else None,
        )


def curves_of(rows_of_car: Iterable[Row], today: date) -> Iterator[tuple[ItemAt, ItemCurve]]:
    """The car's due curves, by item and position."""
    for row in rows_of_car:
        body, legal = row["body"], row["body"].get("legal")
        legal_curve = DueCurve.from_json(legal["curve"]) if legal else None
        since = (today - row["as_of"]).days
        curve = ItemCurve(DueCurve.from_json(body["curve"]), since, legal_curve, _near_curve(body))
        yield (row["item"], row["position"]), curve


def _near_curve(body: dict[str, Any]) -> DueCurve | None:
    """None also of a window that was kept before there was one: it goes by the plain rule until it is made anew."""
    return DueCurve.from_json(body["near"]) if body.get("near") else None


def iso_day(text: str | None) -> date | None:
    """A day as JSON holds it."""
    return date.fromisoformat(text) if text else None
