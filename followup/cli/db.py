"""`followup db`: upgrade the database, check it, and say that a copy of it is the shop now."""

from __future__ import annotations

import click

from followup.cli.house import the_house


@click.group()
def db() -> None:
    """Upgrade the database, check it, or say that it is the shop now."""


@db.command()
def upgrade() -> None:
    """Run every migration that the database has not seen."""
    with the_house() as house:
        house.upgrade_database()
    click.echo("The database is up to date.")


@db.command()
def check() -> None:
    """Say what the database has otherwise than this version needs; exit 1 where there is something."""
    with the_house() as house:
        found = house.database_differences()
    for one in found:
        click.echo(one)
    click.echo("The database is what this version needs." if not found else "Run `followup db upgrade`.")
    raise SystemExit(1 if found else 0)


@db.command()
@click.option("--who", default="the command line", show_default=True, help="Who says so, for the audit trail.")
def here(who: str) -> None:
    """Say that this database is the shop now: a copy of one sends nothing until somebody does.

    Make sure first that no process sends from where the shop was before. What was planned for a moment that has passed
    is held for an advisor: it may have gone out there.
    """
    from followup.workflows.take_over import take_over

    with the_house() as house:
        house.upgrade_database()
        held = take_over(house.store, who, house.now())
    if held is None:
        click.echo("It was the shop already.")
        return
    click.echo("This database is the shop now: texts leave from it.")
    if held:
        click.echo(f"{held} texts may have gone out before: an advisor decides on them.")
