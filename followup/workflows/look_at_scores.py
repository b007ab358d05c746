"""Look at how right the forecasts were: all scores of a shop summed up. Reads only."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from followup.storage import scores
from followup.storage.store import Store

if TYPE_CHECKING:
    from followup.core.forecast.score_card import ScoreCard


def look_at_scores(store: Store, shop_id: int, since: date | None = None) -> ScoreCard:
    """The card of the forecasts that were scored by readings from `since` on (None: all)."""
    # Imported here: numpy and scipy take longer than a page may, before one is asked for.
    from followup.core.forecast.score_card import sum_up
    from followup.core.forecast.score_table import COLUMNS, ScoreTable

    with store.read() as connection:
        found = scores.columns_of_scores(connection, shop_id, COLUMNS, since)
    return sum_up(ScoreTable.of(found))
