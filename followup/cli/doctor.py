"""`followup doctor`: what keeps the shop from working, each with what to do."""

from __future__ import annotations

import click

from followup.cli.house import the_house


@click.command()
def doctor() -> None:
    """Look at the database, the clock, duty and sending; exit 1 where something must be done."""
    from followup.workflows.look_for_trouble import look_for_trouble

    with the_house() as house:
        found = [
            *house.database_differences()[:1],
            *look_for_trouble(house.store, house.now(), house.needs_registration),
        ]
    for one in found:
        click.echo(f"- {one}")
    click.echo("Nothing to do." if not found else f"{len(found)} to look at.")
    raise SystemExit(1 if found else 0)
