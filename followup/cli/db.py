"""`followup db`: upgrade the database, and check that it is what this version needs."""

from __future__ import annotations

import click

from followup.cli.house import the_house


@click.group()
def db() -> None:
    """Upgrade the database and check it."""


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
