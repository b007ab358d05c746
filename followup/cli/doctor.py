"""`followup doctor`: what keeps the shop from working, each with what to do."""

from __future__ import annotations

import click

from followup.cli.house import the_house


@click.command()
def doctor() -> None:
    """Look at the database, the clock, duty and sending; exit 1 where something must be done."""
    from followup.workflows.look_for_trouble import look_for_trouble
    from followup.workflows.take_over import where_it_is

    with the_house() as house:
        differences = house.database_differences()
        where = where_it_is(house.store) if not differences else None
        found = [
            *differences[:1],
            *([f"{where.says}: {where.do}."] if where and where.says else []),
            *look_for_trouble(house.store, house.now(), house.needs_registration),
        ]
    for one in found:
        click.echo(f"- {one}")
    click.echo("Nothing to do." if not found else f"{len(found)} to look at.")
    raise SystemExit(1 if found else 0)
