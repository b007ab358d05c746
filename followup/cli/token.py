"""`followup token`: tokens by which other programs bring inspections over HTTP."""

from __future__ import annotations

import click

from followup.cli.house import shop_id_of, shop_option, the_house
from followup.workflows.keep_tokens import TokenNameUnusable, new_token, revoke_token, tokens_of

WHO = "command line"


@click.group(name="token")
def token() -> None:
    """Tokens by which other programs bring inspections in over HTTP."""


@token.command(name="new")
@click.argument("name")
@shop_option
def new(name: str, shop_code: str) -> None:
    """Make a token called NAME and print it, this once."""
    with the_house() as house:
        try:
            made = new_token(house.store, shop_id_of(house, shop_code), name, house.now(), WHO)
        except TokenNameUnusable as unusable:
            raise click.UsageError(str(unusable)) from unusable
    click.echo("Keep it now: it is not shown again.", err=True)
    click.echo(made)


@token.command(name="list")
@shop_option
def list_tokens(shop_code: str) -> None:
    """The names of all tokens, with when they were made and revoked."""
    with the_house() as house:
        for one in tokens_of(house.store, shop_id_of(house, shop_code)):
            end = f", revoked {one.revoked_at:%Y-%m-%d}" if one.revoked_at else ""
            click.echo(f"{one.name}: made {one.created_at:%Y-%m-%d}{end}")


@token.command(name="revoke")
@click.argument("name")
@shop_option
def revoke(name: str, shop_code: str) -> None:
    """End the token called NAME at once."""
    with the_house() as house:
        done = revoke_token(house.store, shop_id_of(house, shop_code), name, house.now(), WHO)
    if not done:
        click.echo(f"No token called {name} stands.", err=True)
        raise SystemExit(1)
    click.echo(f"{name} is revoked.")
