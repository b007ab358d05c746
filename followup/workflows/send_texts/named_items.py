"""Items, free services and work as a text names them: what was measured and when, what is likely, in its language."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from typing import Any

from followup.core.advisories import Advisory
from followup.core.forecast.window import DueCurve
from followup.core.item import Item
from followup.core.phrasing import phrase_duration, phrase_list
from followup.core.wording_facts import FactValue
from followup.storage import outbox
from followup.storage.advisories import advisories_of_vehicle
from followup.storage.rows import Row
from followup.storage.told_lines import worth_a_line
from followup.wording import advisory_fact, item_fact, measured_phrase, service_fact
from followup.wording.shipped import phrase_file
from followup.workflows.send_texts.short import MOST_LINES, weight
from followup.workflows.send_texts.telling import Telling


def items_of_text(told: Telling) -> FactValue:
    """The lines of the items that the text is about: the most pressing first, the last line names the rest."""
    wanted = [(str(item), str(position)) for item, position in told.raw.get("items", [])]
    if not wanted or told.row["vehicle_id"] is None:
        return []
    seen = {(row["item"], row["position"]): row for row in told.windows}
    advised = _advised(told)
    by_item: dict[str, list[Row]] = {}
    for row in worth_a_line(str(told.row["kind"]), [seen[at] for at in wanted if at in seen], told.today):
        by_item.setdefault(row["item"], []).append(row)
    catalogue = told.catalogue
    told_by_advisory = {one.about[0] for one in advised if one.about[0] in ("alignment", "tire_rotation")}
    named = [catalogue[code] for code in by_item if code in catalogue and code not in told_by_advisory]
    named.sort(key=lambda item: weight(item, by_item[item.code]))
    lines = [_item(told, item, by_item[item.code]) for item in named]
    shown = [*lines[:MOST_LINES], *_also(told.language, lines[MOST_LINES:])]
    # An answer about three items is long enough.
    has_room = told.row["kind"] == "invite" or len(lines) < MOST_LINES
    return [*shown, *(_advisory_line(told, one) for one in advised if has_room)]


def _advised(told: Telling) -> list[Advisory]:
    """The advisories that were planned to be told along, where the car's readings still show them."""
    wanted = told.raw.get("advised", [])
    if not wanted or told.row["vehicle_id"] is None:
        return []
    standing = advisories_of_vehicle(told.connection, told.shop, told.row["vehicle_id"], told.today)
    return [one for one in standing if one.key in wanted]


def _advisory_line(told: Telling, advisory: Advisory) -> dict[str, str]:
    return advisory_fact(told.language, advisory, drives_on_right=_drives_on_right(told), today=told.today)


def _drives_on_right(told: Telling) -> bool:
    return told.shop.country not in ("GB", "IE", "AU", "NZ")


def _also(language: str, rest: list[dict[str, str]]) -> list[dict[str, str]]:
    """What belongs in the same visit but not in a line of its own: a text is read on a phone."""
    if not rest:
        return []
    names = phrase_list([one["name"] for one in rest], language)
    line = str(phrase_file(language, "phrases")["also"]).replace("{names}", names)
    return [{**dict.fromkeys(rest[0], ""), "name": names, "line": line}]


def _item(told: Telling, item: Item, rows: list[Row]) -> dict[str, str]:
    """One line for an item at all its positions: the lowest reading, the earliest likely date."""
    worst = min(rows, key=lambda row: DueCurve.from_json(row["body"]["curve"]).quantile(0.5))
    body = worst["body"]
    measured_on = _day(body.get("measured_on"))
    likely = min((row["body"]["likely"] for row in rows if row["body"]["likely"]), default=None)
    return item_fact(
        told.language,
        item,
        positions=[row["position"] for row in rows],
        measured=_measured(told.language, item, body.get("measured") or {}),
        measured_on=measured_on,
        done_on=None if measured_on else _day(body.get("done_on")),
        due_on=_month_ahead(_day(likely), told.today),
        is_at_limit=any(row["body"]["is_past"] for row in rows),
        drives_on_right=_drives_on_right(told),
        today=told.today,
    )


def _measured(language: str, item: Item, found: Mapping[str, Any]) -> str:
    """The reading in words; a look that is as it should be says only that it was looked at."""
    if "value" in found:
        return measured_phrase(language, item, float(found["value"]), found["unit"])
    word = found.get("word") or ""
    return measured_phrase(language, item, word) if word not in ("", "even", "ok", "full") else ""


def _month_ahead(likely: date | None, today: date) -> date | None:
    """A month that is over, or more than a year ahead, is not said: "around March" must be the coming one."""
    if likely is None or (likely - today).days > 330:
        return None
    return max(likely, today)


def services_of_text(told: Telling) -> FactValue:
    """The free services that the text names, with how much of each."""
    free, catalogue = told.shop.free_services, told.catalogue
    named = [str(item) for item, _ in told.raw.get("items", [])] or list(free)
    kept = [code for code in dict.fromkeys(named) if code in free and code in catalogue]
    return [service_fact(told.language, catalogue[code], free[code]) for code in kept]


def work_of_text(told: Telling) -> FactValue:
    """The work of the visit, in words."""
    if _is_battery_check(told):
        return str(phrase_file(told.language, "phrases")["battery_check"])
    items = told.request["items"] if told.request else told.raw.get("items", [])
    catalogue = told.catalogue
    found = [catalogue[code] for code in dict.fromkeys(str(item) for item, _ in items) if code in catalogue]
    if told.row["reason"] in _NAMES_THE_MAIN_WORK:
        found = _main(told, found)
    work = dict.fromkeys(item_fact(told.language, item)["work"] for item in found)
    return phrase_list(list(work), told.language)


def _is_battery_check(told: Telling) -> bool:
    """A yes to an offered check is no yes to a new battery."""
    reason_id = told.request["reason_id"] if told.request else None
    found = outbox.load_reason(told.connection, reason_id) if reason_id is not None else None
    return found is not None and found["kind"] == "winter_battery"


# A yes to a text is a time, never an order: what was merely near its date is not read back as if it were agreed.
_NAMES_THE_MAIN_WORK = ("offer_times", "confirmation", "reminder")


def _main(told: Telling, found: list[Item]) -> list[Item]:
    """The few items that a text to the customer names, as an invite would order them."""
    by_item: dict[str, list[Row]] = {item.code: [] for item in found}
    for row in told.windows if told.row["vehicle_id"] else []:
        if row["item"] in by_item:
            by_item[row["item"]].append(row)
    return sorted(found, key=lambda item: weight(item, by_item[item.code]))[:MOST_LINES]


def duration_of_text(told: Telling) -> FactValue:
    """About how long the work takes; "" where nothing is known of it."""
    catalogue = told.catalogue
    found = [catalogue[item] for item, _ in told.raw.get("items", []) if item in catalogue]
    hours = sum({item.job.work: item.job.hours for item in found}.values())
    return phrase_duration(hours, told.language) if hours else ""


def _day(text: str | None) -> date | None:
    return date.fromisoformat(text) if text else None
