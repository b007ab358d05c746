"""`followup may-text`: whether a number may be texted, and what decides it."""

from __future__ import annotations

import json
from datetime import UTC, datetime
from pathlib import Path
from typing import cast
from zoneinfo import ZoneInfo

import click

from followup.cli.house import shop_id_of, shop_option, the_house
from followup.cli.json_file import json_option, write_json
from followup.core.text import Cover


@click.command()
@click.argument("number")
@click.option("--cover", type=click.Choice(["visits", "upkeep", "offers"]), required=True, help="What it is about.")
@click.option(
    "--at", "at", default=None, help="When, as 2026-12-01T10:30 (the shop's time) or with a zone; now if left out."
)
@json_option
@shop_option
def may_text(number: str, cover: str, at: str | None, json_file: Path | None, shop_code: str) -> None:
    """Say as JSON whether NUMBER may be texted about COVER, because of what, and when next.

    Exit status: 0 yes, 1 no, 2 wrong use.
    """
    from followup.phone_numbers import NotANumber, read_number
    from followup.workflows.look_at_may_text import look_at_may_text

    with the_house() as house:
        shop_id = shop_id_of(house, shop_code)
        shop = house.shop(shop_id)
        try:
            e164 = read_number(number, shop.country).e164
        except NotANumber as wrong:
            raise click.UsageError(str(wrong)) from wrong
        instant = _instant(at, shop.zone) if at else house.now()
        seen = look_at_may_text(
            house.store, shop_id, e164, instant, needs_registration=house.needs_registration,
            secret=house.ledger_secret,
        )  # fmt: skip
    answer = seen.answers[cast(Cover, cover)]
    told = {
        "may": answer.may,
        "because": [{"rule": one.rule, "says": one.says} for one in answer.because],
        "next_at": answer.next_at.isoformat() if answer.next_at else None,
    }
    write_json(json_file, told)
    click.echo(json.dumps(told, indent=1))
    raise SystemExit(0 if answer.may else 1)


def _instant(text: str, zone: str) -> datetime:
    try:
        at = datetime.fromisoformat(text)
    except ValueError as wrong:
        raise click.UsageError("--at takes a time like 2026-12-01T10:30.") from wrong
    return (at if at.tzinfo else at.replace(tzinfo=ZoneInfo(zone))).astimezone(UTC)
