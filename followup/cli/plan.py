"""`followup plan`: what would be texted, to whom, why, and why not."""

from __future__ import annotations

from datetime import UTC, datetime, time
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

import click

from followup.cli.house import shop_id_of, shop_option, the_house
from followup.cli.json_file import json_option, write_json


@click.command()
@click.option("--on", "on", type=click.DateTime(["%Y-%m-%d"]), default=None, help="As of 10:30 of that day.")
@json_option
@shop_option
def plan(on: datetime | None, json_file: Path | None, shop_code: str) -> None:
    """Show the decision for every car with a phone. Nothing is planned by it. Exit 1 where nothing would leave."""
    from followup.workflows.plan_texts import look_at_plan

    with the_house() as house:
        shop_id = shop_id_of(house, shop_code)
        now = house.now()
        if on is not None:
            zone = ZoneInfo(house.shop(shop_id).zone)
            now = datetime.combine(on.date(), time(10, 30), tzinfo=zone).astimezone(UTC)
        found = [
            _told(one) for one in look_at_plan(house.store, shop_id, now, needs_registration=house.needs_registration)
        ]
    for one in found:
        click.echo(_line(one))
    texts = sum(one["text"] is not None for one in found)
    click.echo(f"{len(found)} cars, {texts} texts")
    write_json(json_file, found)
    raise SystemExit(0 if texts else 1)


def _told(one: Any) -> dict[str, Any]:
    from followup.core.planning.best_hour import says

    text = one.decision.text
    return {
        "number": one.number,
        "vehicle": one.vehicle,
        "label": one.label,
        "text": text
        and {
            "reason": text.reason,
            "try": text.try_number,
            "leaves_at": text.leaves_at.isoformat(),
            "items": [list(item) for item in text.items],
            "because": text.because,
            **({"hour": says(text.leaving)} if text.leaving and text.leaving.how else {}),
        },
        "why_not": [{"rule": because.rule, "says": because.says} for because in one.decision.why_not],
        "calls": [task.says for task in one.decision.phone_tasks],
    }


def _line(one: dict[str, Any]) -> str:
    who = f"{one['vehicle']}  {one['number']}  {one['label'] or ''}"
    if one["text"]:
        text = one["text"]
        hour = f"; it leaves {text['hour']}" if "hour" in text else ""
        return f"{who}: {text['reason']} (try {text['try']}) at {text['leaves_at']}: {text['because']}{hour}"
    return f"{who}: no text: {'; '.join(because['says'] for because in one['why_not']) or 'nothing is due'}"
