"""`followup db`: upgrade the database, check it, move it, and say that a copy of it is the shop now."""

from __future__ import annotations

import threading
from dataclasses import asdict
from pathlib import Path

import click

from followup.cli.house import the_house
from followup.cli.json_file import json_option, write_json


@click.group()
def db() -> None:
    """Upgrade the database, check it, move it to PostgreSQL, or say that a copy is the shop now."""


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
        # One that was moved away took no migration until now.
        house.upgrade_database()
    if held is None:
        click.echo("It was the shop already.")
        return
    click.echo("This database is the shop now: texts leave from it.")
    if held:
        click.echo(f"{held} texts may have gone out before: an advisor decides on them.")


@db.command()
@click.argument("target")
@click.option("--who", default="the command line", show_default=True, help="Who says so, for the audit trail.")
@json_option
def move(target: str, who: str, json_file: Path | None) -> None:
    """Move the shop from SQLite to the empty PostgreSQL database TARGET (postgresql+psycopg://NAME@HOST/DATABASE).

    Leave the password out of it: PGPASSWORD or your .pgpass gives it. The queue may live meanwhile: pages can be read,
    who wants to write waits. Nothing of the queue is lost or sent twice; what was being handed over is looked up from
    the new place. Each table is read back and compared. If it is broken off, this database sends on, and the same
    command begins anew. Afterwards the old file keeps and sends nothing any more; the processes on it end or say so.
    """
    from followup.workflows.move_database import MoveRefused, move_database

    with the_house() as house:
        house.upgrade_database()
        try:
            moved = move_database(
                house.store, target, house.now(), who, lambda words: click.echo(words, err=True),
                threading.Event().wait,
            )  # fmt: skip
        except MoveRefused as refused:
            click.echo(str(refused), err=True)
            raise SystemExit(1) from refused
    if not moved.tables:
        click.echo("It had been moved there already.")
    for one in moved.tables:
        same = "the same" if one.is_same else "NOT THE SAME"
        click.echo(f"{one.name:20} {one.here:8} {one.there:8}  {one.checksum_there[:16]}  {same}")
    write_json(json_file, asdict(moved))
    if moved.in_doubt:
        click.echo(f"{moved.in_doubt} texts were being handed over: it is looked up whether they went out.")
    click.echo("Moved: set FOLLOWUP_DATABASE_URL to the new one and start `followup web` and `followup work` again.")
