"""What every command that needs the database begins with: open the house, pick the shop, say what is missing."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

import click

from followup.settings import SettingMissing, SettingsUnusable
from followup.wiring import House, open_house

shop_option = click.option("--shop", "shop_code", default="", help="The shop's code, where there are several.")


@contextmanager
def the_house() -> Iterator[House]:
    """The installation that the settings describe; what is wrong with them ends the command with status 2."""
    try:
        house = open_house()
    except (SettingsUnusable, SettingMissing) as wrong:
        raise click.UsageError(str(wrong)) from wrong
    try:
        yield house
    except SettingMissing as missing:
        raise click.UsageError(str(missing)) from missing
    finally:
        house.close()


def shop_id_of(house: House, code: str) -> int:
    """The id of the shop of that code, or of the only one."""
    found = house.shops()
    if code:
        found = [one for one in found if one[1] == code]
    if len(found) == 1:
        return found[0][0]
    if not found:
        raise click.UsageError("There is no such shop. Make one with `followup staff add`, or run `followup demo`.")
    codes = ", ".join(one[1] for one in found)
    raise click.UsageError(f"There are several shops: say which with --shop ({codes}).")
