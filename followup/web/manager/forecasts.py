"""How right the forecasts were: said against held, by item, by readings, over time; small numbers told as such."""

from __future__ import annotations

from datetime import date, timedelta
from typing import TYPE_CHECKING

from flask import render_template, request
from flask.typing import ResponseReturnValue

from followup.web.held_chart import HeldChart, HeldRow, lay_out
from followup.web.house import house
from followup.web.login import me
from followup.web.manager.blueprint import blueprint
from followup.web.security import for_roles
from followup.web.steps import MANAGERS
from followup.web.words import MONTHS, catalogue, today
from followup.workflows.look_at_scores import look_at_scores

if TYPE_CHECKING:
    from followup.core.forecast.score_card import ScoreCard

PERIODS = {"90": ("The last 90 days", 90), "365": ("The last year", 365), "all": ("All", None)}
USUAL = "365"
# Quarters beyond these make a long picture and no better sense.
MOST_QUARTERS = 8
LEFT_OUT = {
    "changed": "changed before anybody read them again",
    "moved": "tires that were rotated before anybody read them again",
    "seems_changed": "read as only a part that was changed untold would be",
    "seems_moved": "read as only tires that were rotated untold would be",
    "other_set": "tires of cars with more than one set",
}


@blueprint.get("/forecasts")
@for_roles(*MANAGERS)
def forecasts() -> ResponseReturnValue:
    """What was said, and what came of it."""
    # Imported here: it stands beside the arithmetic, which takes longer than a page may.
    from followup.core.forecast.score_words import sentences

    asked = request.args.get("days", USUAL)
    days = asked if asked in PERIODS else USUAL
    length = PERIODS[days][1]
    card = look_at_scores(house().store, me().shop_id, None if length is None else today() - timedelta(days=length))
    return render_template(
        "manager/forecasts.html", card=card, days=days, periods=PERIODS, charts=charts(card),
        lines=[_unbroken(line) for line in sentences(card)],
        left_out=[(words, card.endings[how]) for how, words in LEFT_OUT.items() if card.endings.get(how)],
        words_of=words_of, unit_of=unit_of,
    )  # fmt: skip


def charts(card: ScoreCard) -> dict[str, HeldChart]:
    """The pictures of the page by name."""
    parts = [
        ("All, by the date", card.usual),
        ("Wear alone, by the odometer", card.by_wear),
        ("As they were made", card.as_made),
        ("Under a planned text", card.texted),
        ("Looked back on", card.looked_back),
    ]
    return {
        "said": lay_out([HeldRow(f"Windows of {round(100 * one.said)} %", one) for one in card.held]),
        "parts": lay_out([HeldRow(words, held) for words, held in parts]),
        "items": lay_out([HeldRow(words_of(one.item), one.held) for one in card.by_item if one.held is not None]),
        "readings": lay_out([HeldRow(_readings(one.name), one.held) for one in card.by_readings]),
        "quarters": lay_out([HeldRow(_quarter(one.name), one.held) for one in card.by_quarter[-MOST_QUARTERS:]]),
        "bands": lay_out([HeldRow(_band(one.low, one.high), one.due) for one in card.bands]),
    }


def _unbroken(line: str) -> str:
    """A number and its per cent sign stay on one line."""
    return line.replace(" %", "\u00a0%")


def words_of(code: str) -> str:
    """An item's words; its code where the shop no longer has it."""
    item = catalogue().get(code)
    return item.words if item is not None else code


def unit_of(code: str) -> str:
    """The unit that an item is measured in."""
    item = catalogue().get(code)
    return (item.unit or "") if item is not None else ""


def _readings(name: str) -> str:
    named = {"0": "Not read since it was changed", "1": "Read once", "4": "Read 4 times or more"}
    return named.get(name, f"Read {name} times")


def _quarter(name: str) -> str:
    begin = date.fromisoformat(name)
    return f"{MONTHS[begin.month - 1]} to {MONTHS[begin.month + 1]} {begin.year}"


def _band(low: float, high: float) -> str:
    if low == 0.0:
        return f"Chance under {round(100 * high)} %"
    if high == 1.0:
        return f"Chance of {round(100 * low)} % and more"
    return f"Chance of {round(100 * low)} to {round(100 * high)} %"
