"""The shop and its rules: every decision that is the shop's own, with its default and the words that explain it.

A rule is one field of `ShopRules`; its metadata says how the manager's page shows it. The machine's settings
(addresses, keys) are `followup/settings.py` instead.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, fields
from datetime import UTC, date, datetime, time, timedelta
from functools import lru_cache
from typing import Any
from zoneinfo import ZoneInfo

from followup.core.item import Item

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
    learns_hours: bool = _rule(
        False, "Within these hours, let invites leave at the hour at which a quick answer is likeliest, as learned",
        "timing",
    )  # fmt: skip
    invites_an_hour: int = _rule(
        30, "Invites that may leave in one learned hour, so that not all leave at once", "timing", least=1, most=1000
    )
    send_at_chance: float = _rule(
        0.25, "Write when the chance of being due within the lead time reaches", "timing", least=0.05, most=0.9
    )
    send_worn_at_chance: float = _rule(
        0.35,
        "Tires and brake pads: write when the chance that the first of the car's is due by then reaches",
        "timing",
        least=0.01,
        most=0.9,
    )
    near_at_chance: float = _rule(
        0.60, "But only when the chance that the visit finds one within 1/32 or 1 mm of its limit reaches",
        "timing", least=0.05, most=0.99,
    )  # fmt: skip
    lead_days: int = _rule(21, "Lead time from a text to the visit, days", "timing", least=1, most=120)
    lead_days_learned: bool = _rule(
        False, "Go by the shop's own time from text to visit instead, as far as visits have shown it", "timing"
    )
    odometer_text_saves_days: int = _rule(
        30, "Ask for the odometer in a text of its own where it saves so many days of being too early", "timing",
        least=5, most=365,
    )  # fmt: skip
    join_at_chance: float = _rule(
        0.25, "Join an item when its chance of being due by then reaches", "timing", least=0.05, most=0.9
    )
    joined_within_days: int = _rule(
        60, "Join what becomes due within so many days after that", "timing", least=0, most=365
    )
    tries: int = _rule(2, "Texts about one reason, at most", "timing", least=1, most=2)
    try_again_days: int = _rule(12, "Days between the first and the second", "timing", least=10, most=14)
    try_again_days_legal: int = _rule(7, "Days between them for an item at its legal limit", "timing", least=5, most=14)
    invite_every_days: int = _rule(14, "One invite a phone in so many days", "timing", least=7, most=90)
    invites_in_30_days: int = _rule(2, "Invites a phone in 30 days, at most", "timing", least=1, most=2)
    invites_a_year: int = _rule(8, "Invites a phone in a year, at most", "timing", least=1, most=8)
    rest_after_visit_days: int = _rule(14, "No invite for so many days after a visit", "timing", least=7, most=90)
    rest_after_complaint_days: int = _rule(
        30, "No invite for so many days after a visit with a complaint", "timing", least=14, most=365
    )
    rest_after_no_days: int = _rule(90, "A no rests the item for so many days", "timing", least=30, most=365)
    rest_after_declined_days: int = _rule(
        30, "An item declined at the counter rests for so many days", "timing", least=14, most=365
    )
    price_text: str = _rule("", "The shop's own words when somebody asks for a price", "wording")
    asks_after_visit: bool = _rule(True, "Ask once after a visit whether everything was all right", "timing")
    offer_held_hours: int = _rule(24, "Hours that an offered time is held", "timing", least=1, most=72)
    ask_below_certainty: float = _rule(0.7, "Ask back below this certainty of a reading", "timing", least=0.4, most=1.0)
    hand_over_below_certainty: float = _rule(
        0.4, "Hand to a person below this certainty", "timing", least=0.0, most=0.7
    )
    check_in_minutes: int = _rule(15, "Minutes of an advisor for one check-in", "timing", least=5, most=60)
    advisors_at_check_in: int = _rule(1, "Advisors who check cars in at the same time", "timing", least=1, most=10)
    labor_hours: dict[str, float] = _rule(
        {"general": 12.0, "tires": 6.0, "brakes": 8.0, "electric": 3.0}, "Labor hours of a day by skill", "timing"
    )
    labor_share: float = _rule(0.85, "Share of the labor hours that is planned", "timing", least=0.3, most=1.0)
    paces_invites: bool = _rule(
        True, "Let invites wait while the hours of the weeks after them are full (legal limits never wait)", "timing"
    )
    waiting_places: int = _rule(4, "Customers who can wait in the shop at a time", "timing", least=0, most=50)
    loaners: int = _rule(1, "Loaner cars", "timing", least=0, most=50)
    shuttle_seats: int = _rule(2, "Shuttle seats in a half day", "timing", least=0, most=50)
    without_invites_share: float = _rule(
        0.0, "Share of customers, drawn by lot each year, who get no invites, so that what texts bring can be measured",
        "timing", least=0.0, most=0.2,
    )  # fmt: skip
    most_stops_per_100: int = _rule(
        3, "Stops per 100 customers at which a manager is told, and a trial of wordings ends", "timing",
        least=1, most=20,
    )  # fmt: skip
    action_limits: dict[str, float] = _rule(
        {}, "Recommend work at, where the shop's value differs from the usual one", "timing"
    )
    legal_limits: dict[str, float] = _rule(
        {}, "Legal limit, where the law of the state differs from the usual one", "timing"
    )
    advise_at_chance: float = _rule(
        0.7, "Speak of uneven wear when the chance that it is truly over its bound reaches", "timing",
        least=0.5, most=0.95,
    )  # fmt: skip
    advisory_bounds: dict[str, float] = _rule(
        {}, "How far readings may lie apart, where the shop's value differs from the usual one", "timing"
    )
    drafts_kept_days: int = _rule(
        7, "Keep an inspection form that was begun and not finished for so many days", "timing", least=1, most=60
    )
    gauges_round_down: bool = _rule(
        False, "Gauges are read down to the last full mark, not to the nearest one", "timing"
    )
    free_services: dict[str, str] = _rule(
        {"washer_fluid": "", "coolant": "", "engine_oil": "up to 1 quart"},
        "Free services, and how much of each",
        "timing",
    )
    invites_unseen: bool = _rule(
        True, "Invite customers who were not seen for long to the free services, at most once a year", "timing"
    )
    unseen_months: int = _rule(9, "Months since the last visit that count as long", "timing", least=3, most=36)
    writes_before_winter: bool = _rule(
        True, "Invite once before winter to a free washer fluid top-off, or to a look at a battery near its limit",
        "timing",
    )  # fmt: skip
    winter_from: str = _rule("", "First day of these invites, where the manager sets it", "timing")
    winter_until: str = _rule("", "Last day of these invites", "timing")
    links_visit: bool = _rule(
        False, "Put a link to the visit for the customer's calendar into its confirmation", "timing"
    )
    write_back_minutes: int = _rule(
        60, "Minutes until a booking request is looked at by somebody", "duty", least=10, most=240
    )
    reminder_days: int = _rule(1, "Days before a visit for its reminder", "timing", least=1, most=3)
    is_sending_stopped: bool = _rule(False, "Stop all invites and visit texts at once", "owner")
    is_everything_off: bool = _rule(False, "Everything off: answers too", "owner")


RULES = fields(ShopRules)
# What due windows are computed with: where one of these changes, every car is forecast again.
FORECAST_RULES = ("action_limits", "legal_limits", "gauges_round_down")


def plain(value: Any) -> Any:
    """A rule's value to be compared: hours come back from the store as lists, and from a form as pairs."""
    if isinstance(value, Mapping):
        return {key: plain(one) for key, one in value.items()}
    return [plain(one) for one in value] if isinstance(value, list | tuple) else value


@dataclass(frozen=True)
class Shop:
    """One shop: who it is to its customers, where it is, and its rules in their present version.

    `own_items` are those that it added to the catalogue (see `core.items.catalogue_of`).
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
    own_items: tuple[Item, ...] = ()

    def drafts_count_from(self, now: datetime) -> datetime:
        """A half-filled form that was last kept before that instant is too old."""
        return now - timedelta(days=self.rules.drafts_kept_days)

    @property
    def free_services(self) -> dict[str, str]:
        """What is topped off free, by item code, and how much of each: by the rules, and by the shop's own items."""
        own = {one.code: "" for one in self.own_items if one.is_top_off_free and one.is_in_use}
        return {**self.rules.free_services, **own}


@lru_cache(maxsize=512)
def wall_time(text: str) -> time:
    """The wall time of "HH:MM"; `ValueError` where it is none."""
    hour, _, minute = text.partition(":")
    return time(int(hour), int(minute))


def hours_on(hours: OpenHours, day: date) -> tuple[time, time] | None:
    """Opening and closing wall time of that weekday in `hours`, or None where it is closed.

    Closed days are not looked at: see `open_span`.
    """
    found = hours.get(WEEKDAYS[day.weekday()])
    return (wall_time(found[0]), wall_time(found[1])) if found else None


# Workshops keep these and open on the lesser ones (common practice); further days go into `closed_on`.
_KEPT_IN_THE_US = ("New Year's Day", "Memorial Day", "Independence Day", "Labor Day", "Thanksgiving", "Christmas Day")
_DAY = timedelta(days=1)
_LOOK_AHEAD_DAYS = 60


@lru_cache(maxsize=256)
def public_holidays(country: str, state: str | None, year: int) -> Mapping[date, str]:
    """Public holidays of a country (ISO 3166) and its state in that year, with their names; {} where none are known."""
    import holidays  # lazy: it costs a tenth of a second that `--help` does not have

    try:
        return dict(holidays.country_holidays(country, subdiv=state, years=year))
    except NotImplementedError:
        try:
            return dict(holidays.country_holidays(country, years=year))
        except NotImplementedError:
            return {}


def closed_because(shop: Shop, day: date) -> str | None:
    """Why the shop is closed all that day, in words; None where it opens."""
    if day.isoformat() in shop.rules.closed_on:
        return "a day on which the shop is closed"
    if shop.rules.closed_on_holidays:
        name = public_holidays(shop.country, shop.state, day.year).get(day, "")
        if name and (shop.country != "US" or name.startswith(_KEPT_IN_THE_US)):
            return name
    return None if hours_on(shop.rules.open_hours, day) else "not a day of the opening hours"


def closed_days(shop: Shop, first: date, last: date) -> tuple[date, ...]:
    """The days from `first` to `last` on which the shop is closed although its weekday is open."""
    days = (first + _DAY * number for number in range((last - first).days + 1))
    return tuple(day for day in days if hours_on(shop.rules.open_hours, day) and closed_because(shop, day))


def open_span(shop: Shop, day: date) -> tuple[datetime, datetime] | None:
    """Opening and closing instant (aware UTC) of that day at the shop; None where it is closed.

    A close of 23:59 means midnight. A wall time that daylight saving skips moves to the next one that exists.
    """
    hours = None if closed_because(shop, day) else hours_on(shop.rules.open_hours, day)
    if hours is None:
        return None
    opens, closes = hours
    last_day, closes = (day + _DAY, time(0)) if closes == time(23, 59) else (day, closes)
    return instant(day, opens, shop.zone), instant(last_day, closes, shop.zone)


def instant(day: date, clock: time, zone: str) -> datetime:
    """That wall time in that zone as aware UTC; one that is skipped moves on by the hour that is missing, one that
    comes twice is the first."""
    return datetime.combine(day, clock, ZoneInfo(zone)).astimezone(UTC)


def is_open(shop: Shop, now: datetime) -> bool:
    """True from the opening instant up to, not at, the closing instant. `now` is aware."""
    span = open_span(shop, now.astimezone(ZoneInfo(shop.zone)).date())
    return span is not None and span[0] <= now < span[1]


def opens_next(shop: Shop, now: datetime) -> datetime | None:
    """The next opening after `now` (aware UTC); None where there is none in 60 days."""
    for span in _spans_from(shop, now):
        if span[0] > now:
            return span[0]
    return None


def closes_next(shop: Shop, now: datetime) -> datetime | None:
    """The end of the present working day, or of the next one where it is closed (aware UTC)."""
    for span in _spans_from(shop, now):
        if span[1] > now:
            return span[1]
    return None


def _spans_from(shop: Shop, now: datetime) -> Iterator[tuple[datetime, datetime]]:
    today = now.astimezone(ZoneInfo(shop.zone)).date()
    for number in range(_LOOK_AHEAD_DAYS):
        span = open_span(shop, today + _DAY * number)
        if span:
            yield span


def working_days_later(shop: Shop, day: date, days: int) -> date:
    """The open day that comes `days` open days after `day`."""
    left = days
    for number in range(1, _LOOK_AHEAD_DAYS + 1):
        later = day + _DAY * number
        left -= closed_because(shop, later) is None
        if left <= 0:
            return later
    return day + _DAY * _LOOK_AHEAD_DAYS
