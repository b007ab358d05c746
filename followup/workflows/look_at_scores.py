"""Look at how right the forecasts were: all scores of a shop summed up. Reads only."""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING

from followup.core.forecast.forecast_score import ForecastScore, KeptScore
from followup.storage import scores
from followup.storage.rows import Row
from followup.storage.store import Store

if TYPE_CHECKING:
    from followup.core.forecast.score_card import ScoreCard

_COLUMNS = tuple(ForecastScore.__dataclass_fields__)


def look_at_scores(store: Store, shop_id: int, since: date | None = None) -> ScoreCard:
    """The card of the forecasts that were scored by readings from `since` on (None: all)."""
    # Imported here: numpy and scipy take longer than a page may, before one is asked for.
    from followup.core.forecast.score_card import sum_up

    with store.read() as connection:
        found = scores.scores_of_shop(connection, shop_id, since)
    return sum_up([_kept(row) for row in found])


def _kept(row: Row) -> KeptScore:
    score = ForecastScore(**{name: row[name] for name in _COLUMNS})
    return KeptScore(score, row["vehicle_id"], row["window_id"] is None, bool(row["is_used"]))
