"""`followup backup FILE`: a whole copy of a SQLite database while it is in use."""

from __future__ import annotations

from pathlib import Path

import click

from followup.cli.house import the_house


@click.command()
@click.argument("file", type=click.Path(dir_okay=False, path_type=Path))
def backup(file: Path) -> None:
    """Write a backup into FILE, which must not exist; its mode is 0600.

    A copy of the database file by other means would miss what stands in its write-ahead log. PostgreSQL has its own
    tools for backups.
    """
    if file.exists():
        raise click.UsageError(f"{file} exists already: name a new file.")
    with the_house() as house:
        if not house.backup(file):
            raise click.UsageError("The database is not SQLite: use your PostgreSQL backup.")
    click.echo(f"Written: {file}")
