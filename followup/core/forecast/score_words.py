"""What a score card says, in plain sentences for managers: small numbers told as small numbers."""

from __future__ import annotations

from datetime import date

from followup.core.forecast.drift import Drift
from followup.core.forecast.forecast_score import Held
from followup.core.forecast.score_card import ScoreCard

_DRIFT = {
    "too_few": "Since about {since} clearly fewer windows hold than they say: dates are less sure than is shown.",
    "too_many": "Since about {since} clearly more windows hold than they say: they are wider than they need be, and "
    "texts may leave early.",
    "more_worn": "Since about {since} parts are more worn than was forecast: dates come out too late.",
    "less_worn": "Since about {since} parts are less worn than was forecast: dates come out too early.",
}
_WHAT_HELPS = "Learning from the shop's own readings corrects this (followup learn)."


def sentences(card: ScoreCard) -> list[str]:
    """The card in a few sentences, the most important first."""
    usual = card.usual
    if not usual.count:
        return ["No window was scored yet. One is scored when its pad or tire is measured again at a later visit."]
    said = [headline(usual)]
    if card.drift is not None:
        said += [drift_words(card.drift), _WHAT_HELPS]
    elif not usual.is_telling:
        said.append("That is too few to tell whether the forecast is right.")
    else:
        said.append(_without_drift(usual))
    if usual.worth < 0.9 * usual.count:
        said.append(
            "What one car shows on one day hangs together: these windows tell as much as "
            f"{usual.worth:.0f} that do not."
        )
    if card.more_worn + card.less_worn:
        said.append(
            f"Of the {card.more_worn + card.less_worn} that did not hold, {card.more_worn} were more worn than "
            f"expected and {card.less_worn} less."
        )
    if card.with_untold.count > usual.count:
        said.append(_untold(card))
    return said


def headline(held: Held) -> str:
    """Such as "Of 412 windows that said 80 %, 331 held (80 %; chance alone gives 76-84 %)."."""
    windows = "window" if held.count == 1 else "windows"
    return (
        f"Of {held.count:,} {windows} that said {percent(held.said)}, {held.held:,} held ({percent(held.share)}; "
        f"chance alone gives {percent_range(held.chance_low, held.chance_high)})."
    )


def _without_drift(held: Held) -> str:
    if held.chance_low <= held.share <= held.chance_high:
        return "Nothing speaks of drift."
    many = "More" if held.share > held.said else "Fewer"
    return f"{many} hold than chance explains, but that is not yet enough to call it drift."


def drift_words(drift: Drift) -> str:
    """In which direction forecasts are off, and since when."""
    return _DRIFT[drift.direction].format(since=month(drift.since_on))


def _untold(card: ScoreCard) -> str:
    left_out = card.with_untold.count - card.usual.count
    return (
        f"{left_out:,} more are left out, because only a part that was changed or moved without being written down "
        f"explains their numbers; with them as misses {percent(card.with_untold.share)} held."
    )


def percent(share: float) -> str:
    """Such as "80 %"."""
    return f"{100 * share:.0f} %"


def percent_range(low: float, high: float) -> str:
    """Such as "76-84 %"."""
    return f"{100 * low:.0f}-{100 * high:.0f} %"


def month(on: date) -> str:
    """Such as "March 2026"."""
    return f"{on:%B} {on.year}"
