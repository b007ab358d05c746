"""`followup bench`: figures side by side, one command a table, each imported when it is called."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

import click

from followup.cli.json_file import json_option, write_json

if TYPE_CHECKING:
    from followup.rehearsal.bench.figures import Figure


@click.group()
def bench() -> None:
    """Measure, side by side with a named alternative: how right, how fast. Exit status 1 where a bar was missed."""


@bench.command()
@click.option("--cars", type=click.IntRange(min=200), default=3_000, show_default=True, help="Cars in each fleet.")
@click.option("--seed", type=int, default=7001, show_default=True, help="Of the first fleet; the others follow.")
@json_option
def forecast(cars: int, seed: int, json_file: Path | None) -> None:
    """How right the forecast is on invented fleets whose truth is known, and how fast."""
    from followup.rehearsal.bench.forecast import Asked, bench_forecast

    asked = Asked(cars, seed)
    with click.progressbar(length=asked.steps, label="living and judging fleets", file=sys.stderr) as bar:
        figures = bench_forecast(asked, bar.update)
    _tell(figures, json_file)


@bench.command()
@click.option("--said", type=click.IntRange(min=20), default=400, show_default=True, help="Sentences from the grammar.")
@click.option("--rounds", type=click.IntRange(min=1), default=5, show_default=True, help="Rounds that are timed.")
@click.option("--long", "long_texts", type=click.IntRange(min=9), default=900, show_default=True, help="Long texts.")
@click.option(
    "--seed", type=int, default=7001, show_default=True, help="Of the sentences from the grammar and the long texts."
)
@json_option
def replies(said: int, rounds: int, long_texts: int, seed: int, json_file: Path | None) -> None:
    """How right times are read from replies, and how fast, beside general-purpose readers where they are installed.

    Then the slowest of many long texts, and how long `followup understand` takes to start.
    """
    from followup.rehearsal.bench.replies import STEPS, Asked, bench_replies

    with click.progressbar(length=STEPS, label="reading replies", file=sys.stderr) as bar:
        figures = bench_replies(Asked(said, rounds, long_texts, seed), bar.update)
    _tell(figures, json_file)


@bench.command()
@click.option("--rounds", type=click.IntRange(min=1), default=15, show_default=True, help="Rounds that are timed.")
@json_option
def checks(rounds: int, json_file: Path | None) -> None:
    """Templates, passwords and tokens, each beside the library that does the bulk of it."""
    from followup.rehearsal.bench.checks import Asked, bench_checks

    asked = Asked(rounds)
    with click.progressbar(length=asked.steps, label="checking", file=sys.stderr) as bar:
        figures = bench_checks(asked, bar.update)
    _tell(figures, json_file)


@bench.command()
@click.option(
    "--seconds", type=click.FloatRange(min=1, max=60), default=8, show_default=True, help="How long each rate is held."
)
@click.option(
    "--saturating", type=click.IntRange(min=100, max=20_000), default=2_000, show_default=True,
    help="Texts that are posted as fast as they are taken.",
)  # fmt: skip
@json_option
def hooks(seconds: float, saturating: int, json_file: Path | None) -> None:
    """How long the provider waits for the hook, beside the least that a hook can be; on this machine alone."""
    from followup.rehearsal.bench.hooks import Asked, bench_hooks

    asked = Asked(seconds, saturating)
    with click.progressbar(length=asked.steps, label="posting to hooks", file=sys.stderr) as bar:
        figures = bench_hooks(asked, bar.update)
    _tell(figures, json_file)


@bench.command()
@click.option("--customers", type=click.IntRange(min=40), default=300, show_default=True, help="Of each shop.")
@click.option("--seed", type=int, default=7001, show_default=True, help="Of the first of three shops.")
@json_option
def hours(customers: int, seed: int, json_file: Path | None) -> None:
    """How much sooner invites are answered at the learned hour than at the usual one, with customers whose own hours
    are known; and whether it costs anything where they have none."""
    from followup.rehearsal.bench.hours import Asked, bench_hours

    asked = Asked(customers, seed)
    with click.progressbar(length=asked.steps, label="living two years", file=sys.stderr) as bar:
        figures = bench_hours(asked, bar.update)
    _tell(figures, json_file)


@bench.command()
@click.option("--rounds", type=click.IntRange(min=1), default=3, show_default=True, help="Sets of each size.")
@click.option("--seed", type=int, default=7001, show_default=True, help="Of the first set; the others follow.")
@json_option
def pacing(rounds: int, seed: int, json_file: Path | None) -> None:
    """What pacing by the linear program costs and takes, beside greedy by regret and order of arrival."""
    from followup.rehearsal.bench.pacing import Asked, bench_pacing

    asked = Asked(rounds, seed)
    with click.progressbar(length=asked.steps, label="placing invites", file=sys.stderr) as bar:
        figures = bench_pacing(asked, bar.update)
    _tell(figures, json_file)


@bench.command()
@click.option("--customers", type=click.IntRange(min=20), default=800, show_default=True, help="Of each seed.")
@click.option("--seed", type=int, default=7001, show_default=True, help="The first of those that follow each other.")
@click.option("--seeds", type=click.IntRange(min=1), default=3, show_default=True, help="How many seeds.")
@json_option
def policies(customers: int, seed: int, seeds: int, json_file: Path | None) -> None:
    """What comes of inviting by our rule, a reminder, a guess, or not at all, in a world whose truth is known."""
    from followup.rehearsal.bench.policies import Asked, bench_policies

    asked = Asked(customers, seed, seeds)
    with click.progressbar(length=asked.steps, label="living four years", file=sys.stderr) as bar:
        figures = bench_policies(asked, bar.update)
    _tell(figures, json_file)


@bench.command()
@click.option(
    "--texts", type=click.IntRange(min=120, max=2_000), default=600, show_default=True,
    help="Texts that each run sends.",
)  # fmt: skip
@click.option("--postgresql", metavar="URL", help="An empty PostgreSQL database to send from as well.")
@json_option
def sending(texts: int, postgresql: str | None, json_file: Path | None) -> None:
    """How many texts leave in a second, beside a queue whose jobs do nothing, and whether the pace of a number holds;
    on this machine alone."""
    from followup.rehearsal.bench.sending import Asked, bench_sending

    asked = Asked(texts, postgresql)
    with click.progressbar(length=asked.steps, label="sending", file=sys.stderr) as bar:
        figures = bench_sending(asked, bar.update)
    _tell(figures, json_file)


@bench.command()
@click.option("--rounds", type=click.IntRange(min=1), default=5, show_default=True, help="How often each is started.")
@json_option
def start(rounds: int, json_file: Path | None) -> None:
    """How long the help and the first page take to start, beside the least that could; on this machine alone."""
    from followup.rehearsal.bench.start import Asked, bench_start

    asked = Asked(rounds)
    with click.progressbar(length=asked.steps, label="starting", file=sys.stderr) as bar:
        figures = bench_start(asked, bar.update)
    _tell(figures, json_file)


@bench.command()
@click.option(
    "--vehicles", type=click.IntRange(min=20, max=1_000_000), default=20_000, show_default=True,
    help="Cars, 500 a shop; 38 kB of disk each.",
)  # fmt: skip
@click.option(
    "--seconds", type=click.FloatRange(min=1, max=120), default=8, show_default=True,
    help="How long the hook is posted to beside it.",
)  # fmt: skip
@click.option("--seed", type=int, default=7001, show_default=True, help="Of the first shop, of which all are copies.")
@click.option("--postgresql", metavar="URL", help="An empty PostgreSQL database to sweep as well.")
@json_option
def sweep(vehicles: int, seconds: float, seed: int, postgresql: str | None, json_file: Path | None) -> None:
    """How long a day's look over all cars takes, beside the least that it can be, and what the hook notices of it;
    on this machine alone."""
    from followup.rehearsal.bench.sweep import Asked, bench_sweep

    asked = Asked(vehicles, seconds, seed, postgresql)
    with click.progressbar(length=asked.steps, label="sweeping", file=sys.stderr) as bar:
        figures = bench_sweep(asked, bar.update)
    _tell(figures, json_file)


@bench.command("what-if")
@click.option("--cars", type=click.IntRange(min=20), default=150, show_default=True, help="Cars that are replayed.")
@click.option("--worlds", type=click.IntRange(min=2), default=10, show_default=True, help="Worlds of the replay.")
@click.option("--timed", type=click.IntRange(min=20), default=5_000, show_default=True, help="Cars that are timed.")
@click.option("--seed", type=int, default=7001, show_default=True, help="Of the cars and of the worlds.")
@json_option
def what_if(cars: int, worlds: int, timed: int, seed: int, json_file: Path | None) -> None:
    """What would come of other rules, told beforehand, against the planner asked day by day; and how long it takes."""
    from followup.rehearsal.bench.what_if import Asked, bench_what_if

    asked = Asked(cars, worlds, timed, seed)
    with click.progressbar(length=asked.steps, label="replaying half a year", file=sys.stderr) as bar:
        figures = bench_what_if(asked, bar.update)
    _tell(figures, json_file)


def _tell(figures: list[Figure], json_file: Path | None) -> None:
    """Write the table (and the file), and exit with 1 where a bar was missed."""
    from followup.rehearsal.bench.figures import as_table

    click.echo(as_table(figures))
    write_json(json_file, [one.to_json() for one in figures])
    sys.exit(1 if any(one.holds is False for one in figures) else 0)
