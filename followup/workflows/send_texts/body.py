"""The words of a text at the moment it leaves: facts from the store, phrased in the customer's language, then rendered.

A text's row holds what was decided (`facts`: items, times, needs ...); numbers and dates come from the store now.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, datetime

from followup.core.phrasing import (
    phrase_clock,
    phrase_date,
    phrase_hours,
    phrase_month,
    phrase_number,
    phrase_past_day,
    phrase_phone,
    phrase_time,
)
from followup.core.replies.contract import TimeWindow
from followup.core.shop import Shop, closed_because, is_open, opens_next
from followup.core.told_times import day_of_window, phrase_window
from followup.core.wall import day_of, to_wall
from followup.core.wording_facts import Facts, FactValue, WrongFacts, names_of
from followup.storage import alerts, calendars, inspections, people, requests, shops
from followup.storage.rows import Row
from followup.storage.store import Connection
from followup.wording import CannotRender, NoSuchTemplate
from followup.wording.shipped import phrase_file
from followup.workflows.send_texts.fleet_units import units_of_text
from followup.workflows.send_texts.named_items import duration_of_text, items_of_text, services_of_text, work_of_text
from followup.workflows.send_texts.short import short_enough
from followup.workflows.send_texts.sight import Sight, look
from followup.workflows.send_texts.telling import Telling

EMERGENCY_NUMBERS = {"US": "911", "CA": "911", "MX": "911", "GB": "999"}
EMERGENCY_ELSEWHERE = "112"


class CannotBeRendered(Exception):
    """The text cannot be put into words."""


@dataclass(frozen=True)
class Rendered:
    """The words that leave; `wording_version` None where the shipped template was used."""

    text: str
    wording_version: int | None


def body_of(
    connection: Connection, shop: Shop, row: Row, now: datetime, sight: Sight | None = None, link_base: str = ""
) -> Rendered:
    """The words of one text; `link_base` is what links of ours begin with. Raises `CannotBeRendered`.

    What was read of it in this transaction is not read again.
    """
    if row["kind"] == "alert":
        return Rendered(str(row["facts"]["words"]), None)
    sight = sight or look(connection, shop, (), now, "")
    facts = facts_of(connection, shop, row, now, sight, link_base)
    own = sight.wording(connection, shop, row)
    try:
        text = short_enough(row, facts, own["source"] if own else None)
    except (CannotRender, WrongFacts, NoSuchTemplate) as cannot:
        raise CannotBeRendered(f"{row['reason']}: {cannot}") from cannot
    return Rendered(text, own["version"] if own else None)


def facts_of(
    connection: Connection, shop: Shop, row: Row, now: datetime, sight: Sight | None = None, link_base: str = ""
) -> Facts:
    """The facts of a text's reason, phrased in its language."""
    found = sight.vehicle(row) if sight else None
    if found is None and row["vehicle_id"]:
        found = people.load_vehicle(connection, shop.id, row["vehicle_id"])
    request = requests.load_request(connection, shop.id, row["request_id"]) if row["request_id"] else None
    car = people.vehicle_of(found) if found else None
    telling = Telling(connection, shop, row, now, car, request, sight, link_base)
    facts: Facts = {}
    for name in names_of(row["reason"]):
        made = _MADE[name](telling)
        if made is not None:
            facts[name] = made
    return facts


def _who(told: Telling) -> FactValue:
    """The first name; never a second person's: with several persons on a phone, none."""
    if told.row["phone_id"] is None:
        return ""
    persons = told.persons
    names = {str(one["name"]).split()[0] for one in persons if one["name"]}
    return names.pop() if len(names) == 1 and not any(one["is_fleet"] for one in persons) else ""


def _car(told: Telling) -> FactValue:
    return (told.vehicle.label or "") if told.vehicle else ""


def _day(text: str | None) -> date | None:
    return date.fromisoformat(text) if text else None


def _windows(told: Telling, key: str) -> list[TimeWindow]:
    return [TimeWindow.model_validate(one) for one in told.raw.get(key, [])]


def _open_windows(told: Telling) -> list[TimeWindow]:
    """What was asked for, without days on which the shop is closed where an open one stands beside them."""
    wanted = _windows(told, "wanted")
    are_open = [one for one in wanted if not ((day := day_of_window(one)) and closed_because(told.shop, day))]
    return are_open or wanted


def _times(told: Telling) -> FactValue:
    """Times that are offered; where none are, those that the customer named."""
    offered = [datetime.fromisoformat(one) for one in told.row["offered"] or told.raw.get("offered", [])]
    if offered:
        return [phrase_time(one, told.language) for one in offered]
    return [phrase_window(one, told.language, told.today) for one in _open_windows(told)]


def _slot(told: Telling) -> datetime | None:
    told_slot = told.raw.get("time")
    if told_slot:
        return to_wall(datetime.fromisoformat(told_slot), told.shop.zone)
    request = told.request if told.row["reason"] != "missed_visit" else _missed(told)
    slot = request["slot_at"] if request else None
    return to_wall(slot, told.shop.zone) if slot else None


def _missed(told: Telling) -> Row | None:
    """The booking that was missed, as its invite speaks of it."""
    found = requests.requests_of_vehicle(told.connection, told.row["vehicle_id"]) if told.row["vehicle_id"] else []
    return next((one for one in found if one["state"] == "missed" and one["slot_at"]), None)


_READ_BACK = ("request_noted", "change_noted")


def _time(told: Telling) -> FactValue:
    wanted = _open_windows(told)
    if told.row["reason"] in _READ_BACK:
        return phrase_window(wanted[0], told.language, told.today) if len(wanted) == 1 else ""
    slot = _slot(told)
    if slot:
        return phrase_time(slot, told.language)
    return phrase_window(wanted[0], told.language, told.today) if wanted else ""


def _old_time(told: Telling) -> FactValue:
    slot = told.raw.get("old_time")
    return phrase_time(to_wall(datetime.fromisoformat(slot), told.shop.zone), told.language) if slot else ""


def _arrival(told: Telling) -> FactValue:
    wanted = [one for one in _windows(told, "wanted") if one.grain == "time"]
    return phrase_clock(datetime.fromisoformat(wanted[0].start)) if wanted and wanted[0].start[0] != "T" else ""


def _said_day(told: Telling) -> FactValue:
    if told.row["reason"] == "after_visit" and told.row["vehicle_id"] is not None:
        closed = [
            row["closed_at"]
            for row in inspections.visits_of_vehicle(told.connection, told.row["vehicle_id"])
            if row["closed_at"]
        ]
        return phrase_date(day_of(max(closed), told.shop.zone), told.language) if closed else ""
    days = [day for one in _windows(told, "wanted") if (day := day_of_window(one))]
    return phrase_date(days[0], told.language) if days else ""


def _days(told: Telling) -> FactValue:
    days = list(dict.fromkeys(day for one in _windows(told, "wanted") if (day := day_of_window(one))))
    return [phrase_date(day, told.language) for day in days] if len(days) > 1 else []


def _closed_day(told: Telling) -> FactValue:
    days = [day for one in _windows(told, "wanted") if (day := day_of_window(one))]
    is_one = len(days) == 1 and closed_because(told.shop, days[0])
    return phrase_date(days[0], told.language) if is_one else ""


def _until(told: Telling) -> FactValue:
    until = _day(told.raw.get("until"))
    return phrase_month(until, told.language) if until else ""


def _odometer(told: Telling) -> FactValue:
    said = told.raw.get("odometer")
    if said is None and told.row["reason"] == "odometer_question" and told.row["vehicle_id"] is not None:
        last = _last_odometer(told)
        said = {"value": last[1], "unit": "mi"} if last else None
    if not said:
        return ""
    pattern = str(phrase_file(told.language, "phrases")["units"][said["unit"]])
    return pattern.replace("{value}", phrase_number(float(said["value"])))


def _last_odometer(told: Telling) -> tuple[date, float] | None:
    rows = inspections.bodies_of_vehicle(told.connection, told.row["vehicle_id"])
    known = [(row["inspected_on"], row["odometer_miles"]) for row in rows if row["odometer_miles"] is not None]
    return max(known, default=None)


def _odometer_on(told: Telling) -> FactValue:
    last = _last_odometer(told) if told.row["vehicle_id"] is not None else None
    return phrase_past_day(last[0], told.today, told.language) if last else ""


def _needs(told: Telling) -> FactValue:
    words = phrase_file(told.language, "phrases")["needs"]
    needs = told.request["needs"] if told.request else told.raw.get("needs", [])
    return [str(words[need]) for need in needs if need in words]


def _opens_at(told: Telling) -> FactValue:
    opens = opens_next(told.shop, told.now)
    return phrase_time(to_wall(opens, told.shop.zone), told.language) if opens else ""


def _alerted(told: Telling) -> FactValue:
    """Only an alert that was accepted for sending, or seen by somebody, may be spoken of."""
    if told.row["alert_id"] is None:
        return False
    alert = alerts.load_alert(told.connection, told.shop.id, told.row["alert_id"])
    accepted = alerts.is_alert_text_accepted(told.connection, told.row["alert_id"])
    return accepted or bool(alert and alert["acknowledged_at"])


def _on_call(told: Telling) -> FactValue:
    return shops.load_roster(told.connection, told.shop.id).on_call is not None


def _recall_done_by(told: Telling) -> str:
    if told.row["vehicle_id"] is None:
        return ""
    recalls = inspections.recalls_of_vehicle(told.connection, told.row["vehicle_id"])
    return str(recalls[0]["done_by"]) if recalls else ""


def _asked_for(told: Telling) -> str:
    slot = told.raw.get("asked_for")
    return phrase_time(to_wall(datetime.fromisoformat(slot), told.shop.zone), told.language) if slot else ""


def _link(told: Telling) -> FactValue:
    """Where the customer's calendar finds the visit; only where the pages have a public address."""
    if not told.link_base or told.row["reason"] != "confirmation" or told.request is None:
        return ""
    code = calendars.code_of_visit(told.connection, told.shop, told.request)
    return f"{told.link_base}/v/{code}.ics" if code else ""


_MADE: dict[str, Callable[[Telling], FactValue | None]] = {
    "shop": lambda told: told.shop.name,
    "shop_phone": lambda told: phrase_phone(told.shop.phone),
    "who": _who,
    "car": _car,
    "items": items_of_text,
    "services": services_of_text,
    "season_tires": lambda told: str(
        phrase_file(told.language, "phrases")[f"{told.raw.get('to_set', 'winter')}_tires"]
    ),
    "times": _times,
    "time": _time,
    "old_time": _old_time,
    "arrival": _arrival,
    "day": _said_day,
    "days": _days,
    "closed_day": _closed_day,
    "until": _until,
    "try_no": lambda told: int(told.row["try_no"]),
    "ask_odometer": lambda told: bool(told.raw.get("ask_odometer", False)),
    "odometer": _odometer,
    "odometer_on": _odometer_on,
    "cars": lambda told: [str(one) for one in told.raw.get("cars", [])],
    "work": work_of_text,
    "needs": _needs,
    "open_hours": lambda told: phrase_hours(told.shop.rules.open_hours, told.language),
    "opens_at": _opens_at,
    "is_open": lambda told: is_open(told.shop, told.now),
    "on_call": _on_call,
    "alerted": _alerted,
    "emergency_number": lambda told: EMERGENCY_NUMBERS.get(told.shop.country, EMERGENCY_ELSEWHERE),
    "roadside_phone": lambda told: phrase_phone(told.shop.roadside_phone) if told.shop.roadside_phone else "",
    "address": lambda told: told.shop.address,
    "link": _link,
    "units": units_of_text,
    "more_units": lambda told: 0,
    "message": lambda told: str(told.raw.get("message", "")),
    "price_text": lambda told: str(told.shop.rules.price_text),
    "duration": duration_of_text,
    "done_by": lambda told: str(told.raw.get("done_by", "")) or _recall_done_by(told),
    "is_machine_question": lambda told: bool(told.raw.get("is_machine_question", False)),
    "is_upkeep": lambda told: bool(told.raw.get("is_upkeep", False)),
    "invites_a_year": lambda told: int(told.shop.rules.invites_a_year),
    "is_moved": lambda told: bool(told.request and told.request["replaces_id"]),
    "is_early_drop": lambda told: "early_drop" in (told.request["needs"] if told.request else []),
    "asked_for": _asked_for,
}
