"""The priors that a shop's forecasts go by: what was learned, with the facts of the shop that nobody learns."""

from __future__ import annotations

from dataclasses import replace

from sqlalchemy import Connection

from followup.core.forecast.priors import PUBLISHED, ShopPriors
from followup.core.forecast.tire_seasons import tire_seasons
from followup.core.shop import Shop
from followup.storage import learned_priors


def priors_of(connection: Connection, shop: Shop) -> ShopPriors:
    """What is usual at this shop."""
    used = learned_priors.in_use(connection, shop.id)
    learned = ShopPriors.from_json(used["body"]["priors"]) if used and used["body"] else PUBLISHED
    return replace(learned, tire_seasons=tire_seasons(shop.state), gauges_round_down=shop.rules.gauges_round_down)
