"""`followup simulate`: years of a simulated shop by the real program, judged daily, beside other ways of inviting."""

from __future__ import annotations

import sys
import tempfile
from concurrent.futures import ProcessPoolExecutor
from pathlib import Path

import click

from followup.cli.json_file import json_option, write_json

# Nothing of it is kept, so no disk need be waited for.
_IN_MEMORY = Path("/dev/shm")  # a folder of its own is made in it


@click.command()
@click.option("--cars", type=click.IntRange(min=5), default=500, show_default=True, help="One for each customer.")
@click.option("--years", type=click.FloatRange(min=0.02, max=5), default=2.0, show_default=True)
@click.option("--seed", type=int, default=7001, show_default=True, help="The same shop for the same seed.")
@click.option("--faults", is_flag=True, help="With a provider that fails and a bad week every two months.")
@click.option("--without-web", is_flag=True, help="Events reach the program by its workflows alone: no pages, no HTTP.")
@json_option
def simulate(cars: int, years: float, seed: int, faults: bool, without_web: bool, json_file: Path | None) -> None:
    """Let a simulated shop live: customers, staff and cars whose truth is known, around the real program.

    What is promised is judged every day. Prints what came of it beside other ways of inviting. Exit status 1 where a
    promise was broken.
    """
    from followup.rehearsal.years.crowd import MOST
    from followup.rehearsal.years.life import OVER_THE_WIRE_ONE_IN, Years, live_years
    from followup.rehearsal.years.ways import as_words, other_ways, our_way

    if cars > MOST:
        raise click.UsageError(f"There are numbers for {MOST} customers.")
    if faults and without_web:
        raise click.UsageError("The faults are those of the web and the network: leave one of the two out.")
    asked = Years(cars, years, seed, faults, without_web)
    where = _IN_MEMORY if _IN_MEMORY.is_dir() else None
    # The other ways are worked out beside it, on the second core.
    with ProcessPoolExecutor(1) as beside:
        others = beside.submit(other_ways, cars, seed)
        with tempfile.TemporaryDirectory(prefix="followup-simulate-", dir=where) as folder:
            lived = live_years(asked, Path(folder), lambda words: click.echo(words, err=True))
        ways = [our_way(lived), *others.result()]
    click.echo(f"{cars} cars, {asked.weeks} weeks, seed {seed}{', with faults' if faults else ''}: {lived.in_words}")
    wire = (
        "nothing over HTTP"
        if without_web
        else f"over HTTP what went wrong, and one in {OVER_THE_WIRE_ONE_IN} of the rest"
    )
    click.echo(f"calls to the provider and hooks: {wire}\n")
    click.echo(as_words(ways))
    for one in lived.broken:
        click.echo(f"broken: {one.in_words}, seed {seed}")
    write_json(json_file, [one.to_json() for one in ways])
    sys.exit(1 if lived.broken else 0)
