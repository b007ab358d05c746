"""`followup work`: the ticking clock and the sender."""

from __future__ import annotations

from datetime import UTC, datetime

import click

from followup.cli.house import the_house


@click.command()
@click.option(
    "--until",
    "until",
    metavar="INSTANT",
    help="With a clock that FOLLOWUP_CLOCK moves: run every tick due up to then (2026-12-15T09:00:00Z), and return.",
)
def work(until: str | None) -> None:
    """Forecast, plan, send, answer and tell who is on duty, until it is stopped."""
    from followup import scheduler
    from followup.logs import log_to_standard_error

    log_to_standard_error()
    with the_house() as house:
        house.upgrade_database()
        if not house.move_in():
            click.echo("followup work: nothing is sent from this database: see `followup doctor`.", err=True)
        if house.has_moved():
            raise SystemExit(1)
        if until is None:
            scheduler.tick_for_ever(house)
            return
        ran = scheduler.run_until(house, _instant(until))
        click.echo(f"followup work: {ran} ticks until {until}", err=True)


def _instant(text: str) -> datetime:
    try:
        instant = datetime.fromisoformat(text)
    except ValueError as wrong:
        raise click.UsageError(f"{text} is no instant: write it like 2026-12-15T09:00:00Z.") from wrong
    if instant.tzinfo is None:
        raise click.UsageError(f"{text} has no zone: write it like 2026-12-15T09:00:00Z.")
    return instant.astimezone(UTC)
