"""`followup learn`: the shop's own priors from its cars, kept where they foretell no worse."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import Any

import click

from followup.cli.house import shop_id_of, shop_option, the_house
from followup.cli.json_file import json_option, write_json
from followup.wiring import House
from followup.workflows.learn_priors import LearnedRun

_AUTHOR = "command line"


@click.command()
@click.option("--published", "is_back", is_flag=True, help="Go back to the published values; learning then rests.")
@click.option("--use", "version", type=click.IntRange(min=1), default=None, help="Go by this earlier version again.")
@json_option
@shop_option
def learn(is_back: bool, version: int | None, json_file: Path | None, shop_code: str) -> None:
    """Learn from all cars of the shop now, and say what is kept. Exit 1 where nothing is.

    Each car's last readings are foretold without it: what foretells them worse than the published values is not kept.
    The clock does the same each night on which there is news.
    """
    if is_back and version is not None:
        raise click.UsageError("Say --published or --use, not both.")
    with the_house() as house:
        shop_id = shop_id_of(house, shop_code)
        if is_back or version is not None:
            click.echo(_go_back(house, shop_id, version))
            return
        run = _learn(house, shop_id)
        words = _words(house, shop_id, run)
    write_json(json_file, _as_json(run, words))
    for line in words:
        click.echo(line)
    raise SystemExit(0 if run.learned.is_news else 1)


def _learn(house: House, shop_id: int) -> LearnedRun:
    """Learn with a progress bar."""
    from followup.core.forecast.learn import PASSES
    from followup.workflows.learn_priors import count_cars

    cars = count_cars(house.store, shop_id)
    # Read once, and then looked at up to so many times.
    with click.progressbar(length=(1 + PASSES) * cars, label="learning", file=sys.stderr) as bar:
        run = house.learn(shop_id, _AUTHOR, bar.update)
        bar.update(bar.length or 0)
    return run


def _go_back(house: House, shop_id: int, version: int | None) -> str:
    from followup.workflows.learn_priors import bring_back, go_by_published, newest_version

    newest = newest_version(house.store, shop_id)
    if version is None:
        kept = go_by_published(house.store, shop_id, _AUTHOR, house.now(), newest)
        return f"Forecasts go by the published values from now on, kept as version {kept}. Learning rests."
    try:
        kept = bring_back(house.store, shop_id, version, _AUTHOR, house.now(), newest)
    except LookupError as wrong:
        raise click.UsageError(str(wrong)) from wrong
    return f"Forecasts go by version {version} again, kept as version {kept}. Learning goes on."


def _words(house: House, shop_id: int, run: LearnedRun) -> list[str]:
    from followup.core.forecast.learned import sentences
    from followup.workflows.look_at_catalogue import look_at_catalogue

    told = sentences(run.learned, look_at_catalogue(house.store, shop_id))
    if run.is_used:
        return [*told, f"Kept as version {run.version}: forecasts go by it from now on."]
    if run.learned.is_news:
        return [*told, f"Kept as version {run.version}: it hardly differs from what is in use, which stays."]
    return [*told, f"Kept as version {run.version}: what was in use stays in use."]


def _as_json(run: LearnedRun, words: list[str]) -> dict[str, Any]:
    return {"version": run.version, "is_used": run.is_used, "says": words, **run.learned.to_json()}
