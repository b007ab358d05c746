"""`followup token`: tokens by which other programs bring inspections over HTTP."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

import click

if TYPE_CHECKING:
    from followup.wiring import House

WHO = "command line"
shop_option: Callable[..., Callable[..., None]] = click.option(
    "--shop", "shop_code", default="", metavar="CODE", help="Which shop, where there are several."
)


@click.group(name="token")
def token() -> None:
    """Tokens by which other programs bring inspections in over HTTP."""


@token.command(name="new")
@click.argument("name")
@shop_option
def new(name: str, shop_code: str) -> None:
    """Make a token called NAME and print it, this once."""
    from followup.workflows.keep_tokens import TokenNameUnusable, new_token

    house, shop_id = _open(shop_code)
    try:
        made = new_token(house.store, shop_id, name, house.now(), WHO)
    except TokenNameUnusable as unusable:
        raise click.UsageError(str(unusable)) from unusable
    finally:
        house.close()
    click.echo("Keep it now: it is not shown again.", err=True)
    click.echo(made)


@token.command(name="list")
@shop_option
def list_tokens(shop_code: str) -> None:
    """The names of all tokens, with when they were made and revoked."""
    from followup.workflows.keep_tokens import tokens_of

    house, shop_id = _open(shop_code)
    for one in tokens_of(house.store, shop_id):
        end = f", revoked {one.revoked_at:%Y-%m-%d}" if one.revoked_at else ""
        click.echo(f"{one.name}: made {one.created_at:%Y-%m-%d}{end}")
    house.close()


@token.command(name="revoke")
@click.argument("name")
@shop_option
def revoke(name: str, shop_code: str) -> None:
    """End the token called NAME at once."""
    from followup.workflows.keep_tokens import revoke_token

    house, shop_id = _open(shop_code)
    done = revoke_token(house.store, shop_id, name, house.now(), WHO)
    house.close()
    if not done:
        click.echo(f"No token called {name} stands.", err=True)
        raise SystemExit(1)
    click.echo(f"{name} is revoked.")


def _open(shop_code: str) -> tuple[House, int]:
    """The installation, and the shop that is meant."""
    from followup.wiring import open_house
    from followup.workflows.find_shop import NoSuchShop, find_shop

    house = open_house()
    try:
        return house, find_shop(house.store, shop_code)
    except NoSuchShop as unknown:
        house.close()
        raise click.UsageError(str(unknown)) from unknown
