"""`followup staff add`: the first owner of a shop, and the shop itself where there is none."""

from __future__ import annotations

import click

from followup.cli.house import the_house


@click.group()
def staff() -> None:
    """Add members of staff."""


@staff.command()
@click.argument("login")
@click.option("--name", required=True, help="The member's name, as others see it.")
@click.option("--role", type=click.Choice(["technician", "advisor", "manager", "owner"]), default="owner")
@click.option(
    "--shop", "shop_code", default="shop", show_default=True, help="The shop's code; it is made if it is new."
)
@click.option("--shop-name", default=None, help="The shop's name, as customers know it (for a new shop).")
@click.option("--zone", default="America/Chicago", show_default=True, help="Its IANA time zone (for a new shop).")
@click.option("--phone", default=None, help="Its phone number, like +13125550100 (for a new shop).")
@click.password_option(help="Asked for where it is not given.")
def add(
    login: str, name: str, role: str, shop_code: str, shop_name: str | None, zone: str, phone: str | None, password: str
) -> None:
    """Add LOGIN to a shop. There is no default password: it is asked for."""
    from followup.workflows.add_first_staff import NewShop, ShopUnusable, add_first_staff

    with the_house() as house:
        house.upgrade_database()
        shop = NewShop(shop_name, zone, phone, house.settings.sender_number)
        try:
            made = add_first_staff(house.store, shop_code, shop, login, name, role, password, house.now())
        except ShopUnusable as wrong:
            raise click.UsageError(str(wrong)) from wrong
    click.echo(f"{login} can sign in at {house.settings.public_base_url} ({made}).")
