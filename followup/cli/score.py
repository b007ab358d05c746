"""`followup score`: how right the forecasts were, said against held."""

from __future__ import annotations

import json
import sys
from dataclasses import asdict
from datetime import date, datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from followup.cli.house import shop_id_of, shop_option, the_house
from followup.cli.json_file import json_option, write_json
from followup.core.item import Catalogue
from followup.core.items import catalogue_of

if TYPE_CHECKING:
    from followup.core.forecast.forecast_score import Held
    from followup.core.forecast.score_card import ItemPart, ScoreCard

_NAME = 34


@click.command()
@click.option(
    "--since",
    type=click.DateTime(["%Y-%m-%d"]),
    default=None,
    metavar="DATE",
    help="Only readings of this day and later.",
)
@json_option
@shop_option
def score(since: datetime | None, json_file: Path | None, shop_code: str) -> None:
    """Show how many due windows held, by item, by readings and over time. Exit 1 where forecasts drift.

    A window held where the next reading lies within what it led to expect. What was not scored yet is scored first.
    """
    from followup.core.forecast.score_words import sentences
    from followup.workflows.look_at_scores import look_at_scores
    from followup.workflows.score_forecasts import count_cars_to_score

    with the_house() as house:
        shop_id = shop_id_of(house, shop_code)
        waiting = count_cars_to_score(house.store, shop_id)
        with click.progressbar(length=waiting, label="scoring", file=sys.stderr) as bar:
            house.score(shop_id, progress=bar.update)
        card = look_at_scores(house.store, shop_id, since.date() if since else None)
        items = catalogue_of(house.shop(shop_id))
    said = sentences(card)
    write_json(json_file, _as_json(card, said))
    for line in said:
        click.echo(line)
    if card.usual.count:
        for line in _tables(card, items):
            click.echo(line)
    raise SystemExit(1 if card.drift else 0)


def _tables(card: ScoreCard, items: Catalogue) -> list[str]:
    head = f"{'':{_NAME}} {'said':>5} {'windows':>8} {'held':>6} {'share':>6}  {'true share (95 %)':>17}  by chance"
    lines = ["", head, *(_held(f"windows of {one.said:.0%}", one) for one in card.held)]
    lines += [
        _held("wear alone, distance known", card.by_wear),
        _held("untold changes as misses", card.with_untold),
        _held("as they were made", card.as_made),
        _held("under a text that was planned", card.texted),
        _held("looked back on", card.looked_back),
        "",
        *(_held(_words(one.item, items), one.held) for one in card.by_item if one.held is not None),
        "",
        *(_held(_readings(one.name), one.held) for one in card.by_readings),
        "",
        *(_held(f"quarter from {one.name}", one.held) for one in card.by_quarter),
        "",
        f"{'found due at the next look':{_NAME}} {'looked at':>10} {'expected':>9} {'found':>6} {'mean error':>13}",
        *(_looked_at(one, items) for one in card.by_item if one.looked_at),
    ]
    return lines


def _held(name: str, held: Held) -> str:
    if not held.count:
        return f"{name:{_NAME}} {held.said:>5.0%} {0:>8}"
    true, by_chance = f"{held.low:.0%}-{held.high:.0%}", f"{held.chance_low:.0%}-{held.chance_high:.0%}"
    return (
        f"{name:{_NAME}} {held.said:>5.0%} {held.count:>8,} {held.held:>6,} {held.share:>6.0%}  {true:>17}  {by_chance}"
    )


def _looked_at(one: ItemPart, items: Catalogue) -> str:
    unit = items[one.item].unit if one.item in items else None
    error = "" if one.mean_error is None else f"{one.mean_error:+.2f} {unit or ''}".strip()
    words = _words(one.item, items)
    return f"{words:{_NAME}} {one.looked_at:>10,} {one.expected_due:>9.1f} {one.found_due:>6,} {error:>13}"


def _words(code: str, items: Catalogue) -> str:
    return items[code].words if code in items else code


def _readings(name: str) -> str:
    return {"0": "not read since it was changed", "1": "read once", "4": "read 4 times or more"}.get(
        name, f"read {name} times"
    )


def _as_json(card: ScoreCard, said: list[str]) -> dict[str, Any]:
    return {"sentences": said, **json.loads(json.dumps(asdict(card), default=_plain))}


def _plain(value: Any) -> Any:
    return value.isoformat() if isinstance(value, date) else float(value)
