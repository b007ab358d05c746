"""`followup backup FILE`: a whole copy of the database while it is in use."""

from __future__ import annotations

from pathlib import Path

import click

from followup.cli.house import the_house


@click.command()
@click.argument("file", type=click.Path(dir_okay=False, path_type=Path))
def backup(file: Path) -> None:
    """Write a backup into FILE, which must not exist; its mode is 0600.

    It holds names, numbers and texts: keep it as you keep the database. A copy of the database file by other means
    would miss what stands in its log. PostgreSQL is copied by its own pg_dump, which must be installed here. What is
    put back sends nothing until `followup db here` says that it is the shop now.
    """
    from followup.workflows.back_up import BackupFailed, back_up

    if file.exists():
        raise click.UsageError(f"{file} exists already: name a new file.")
    with the_house() as house:
        try:
            how_back = back_up(house.store, file, house.now())
        except BackupFailed as failed:
            click.echo(str(failed), err=True)
            raise SystemExit(1) from failed
    click.echo(f"Written: {file}")
    click.echo(how_back)
