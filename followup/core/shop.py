"""The shop and its rules: every decision that is the shop's own, with its default and the words that explain it.

A rule is one field of `ShopRules`; its metadata says how the manager's page shows it. The machine's settings
(addresses, keys) are `followup/settings.py` instead.
"""

from __future__ import annotations

from dataclasses import dataclass, field, fields
from datetime import date, time
from typing import Any

WEEKDAYS = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")
OpenHours = dict[str, tuple[str, str]]

_WEEK: OpenHours = {**dict.fromkeys(WEEKDAYS[:5], ("07:30", "18:00")), "sat": ("08:00", "14:00")}
_INVITES: OpenHours = {**dict.fromkeys(WEEKDAYS[:5], ("10:00", "18:00")), "sat": ("10:00", "17:00")}
_VISITS: OpenHours = dict.fromkeys(WEEKDAYS, ("08:00", "20:00"))


def _rule(default: Any, words: str, page: str, *, least: float | None = None, most: float | None = None) -> Any:
    shown = {"words": words, "page": page, "least": least, "most": most}
    if isinstance(default, dict | list):
        return field(default_factory=lambda: type(default)(default), metadata=shown)
    return field(default=default, metadata=shown)


@dataclass(frozen=True)
class ShopRules:
    """All rules of one shop, as one version of them. Times are local wall times "HH:MM"."""

    open_hours: OpenHours = _rule(_WEEK, "When the shop is open", "timing")
    closed_on: list[str] = _rule([], "Days on which it is closed besides", "timing")
    closed_on_holidays: bool = _rule(True, "Closed on public holidays", "timing")
    invite_hours: OpenHours = _rule(_INVITES, "When invites may leave", "timing")
    visit_text_hours: OpenHours = _rule(_VISITS, "When texts about a visit may leave", "timing")
    send_at_chance: float = _rule(
        0.25, "Write when the chance of being due within the lead time reaches", "timing", least=0.05, most=0.9
    )
    lead_days: int = _rule(21, "Lead time from a text to the visit, days", "timing", least=1, most=120)
    joined_within_days: int = _rule(
        60, "Join what becomes due within so many days after that", "timing", least=0, most=365
    )
    tries: int = _rule(2, "Texts about one reason, at most", "timing", least=1, most=2)
    try_again_days: int = _rule(12, "Days between the first and the second", "timing", least=10, most=14)
    try_again_days_legal: int = _rule(7, "The same for an item at its legal limit", "timing", least=5, most=14)
    invite_every_days: int = _rule(14, "One invite a phone in so many days", "timing", least=7, most=90)
    invites_in_30_days: int = _rule(2, "Invites a phone in 30 days, at most", "timing", least=1, most=2)
    invites_a_year: int = _rule(8, "Invites a phone in a year, at most", "timing", least=1, most=8)
    rest_after_visit_days: int = _rule(14, "No invite for so many days after a visit", "timing", least=7, most=90)
    rest_after_complaint_days: int = _rule(30, "The same after a complaint", "timing", least=14, most=365)
    rest_after_no_days: int = _rule(90, "A no rests the item for so many days", "timing", least=30, most=365)
    rest_after_declined_days: int = _rule(
        30, "An item declined at the counter rests for so many days", "timing", least=14, most=365
    )
    offer_held_hours: int = _rule(24, "Hours that an offered time is held", "timing", least=1, most=72)
    ask_below_certainty: float = _rule(0.7, "Ask back below this certainty of a reading", "timing", least=0.4, most=1.0)
    hand_over_below_certainty: float = _rule(
        0.4, "Hand to a person below this certainty", "timing", least=0.0, most=0.7
    )
    check_in_minutes: int = _rule(15, "Minutes of an advisor for one check-in", "timing", least=5, most=60)
    labor_hours: dict[str, float] = _rule(
        {"general": 12.0, "tires": 6.0, "brakes": 8.0, "electric": 3.0}, "Labor hours of a day by skill", "timing"
    )
    labor_share: float = _rule(0.85, "Share of the labor hours that is planned", "timing", least=0.3, most=1.0)
    waiting_places: int = _rule(4, "Customers who can wait in the shop at a time", "timing", least=0, most=50)
    loaners: int = _rule(1, "Loaner cars", "timing", least=0, most=50)
    shuttle_seats: int = _rule(2, "Shuttle seats in a half day", "timing", least=0, most=50)
    action_limits: dict[str, float] = _rule({}, "Recommend at (item: value), where it differs", "timing")
    legal_limits: dict[str, float] = _rule({}, "Legal limit (item: value), where it differs", "timing")
    free_services: dict[str, str] = _rule(
        {"washer_fluid": "", "coolant": "", "engine_oil": "up to 1 quart"},
        "Free services: the item and how much of it",
        "timing",
    )
    write_back_minutes: int = _rule(
        60, "Minutes until a booking request is looked at by somebody", "duty", least=10, most=240
    )
    reminder_days: int = _rule(1, "Days before a visit for its reminder", "timing", least=1, most=3)
    is_sending_stopped: bool = _rule(False, "Stop all invites and visit texts at once", "owner")
    is_everything_off: bool = _rule(False, "Everything off: answers too", "owner")


RULES = fields(ShopRules)


@dataclass(frozen=True)
class Shop:
    """One shop: who it is to its customers, where it is, and its rules in their present version.

    `phone` and `texts_from` are E.164; `zone` an IANA name; `country` ISO 3166 alpha-2, `state` its subdivision.
    """

    id: int
    name: str
    zone: str
    phone: str
    texts_from: str
    address: str = ""
    country: str = "US"
    state: str | None = None
    roadside_phone: str | None = None
    order: str = "month-first"
    registration: str | None = None
    rules: ShopRules = field(default_factory=ShopRules)
    rules_version: int = 1


def wall_time(text: str) -> time:
    """The wall time of "HH:MM"; `ValueError` where it is none."""
    hour, _, minute = text.partition(":")
    return time(int(hour), int(minute))


def hours_on(hours: OpenHours, day: date) -> tuple[time, time] | None:
    """Opening and closing wall time of that weekday in `hours`, or None where it is closed. Holidays are not looked at:
    see `core/planning/hours.py`."""
    found = hours.get(WEEKDAYS[day.weekday()])
    return (wall_time(found[0]), wall_time(found[1])) if found else None
