"""Before winter: the washer fluid that the shop tops off free, or a look at a battery that may soon be weak.

One such text a car and winter at most. The days follow from where the shop is, as those of winter tires do, unless its
manager sets them. Nothing is diagnosed: a battery is named only where its own due window is near, and what is offered
is a check.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime, timedelta

from followup.core.forecast.tire_seasons import tire_seasons
from followup.core.planning.candidate import Candidate
from followup.core.planning.draw import drawn
from followup.core.planning.item_stops import item_stop
from followup.core.planning.joining import triggers
from followup.core.planning.picture import CarPicture, DueItem
from followup.core.planning.walk_ins import free_now
from followup.core.shop import Shop

# The invites begin so long before people put winter tires on, and end when they do.
BEFORE_DAYS = 45
# Washer fluid that was seen or topped off so recently is no reason (an assumption).
WASHER_IS_KNOWN_DAYS = 60
SEASONAL = frozenset({"winter_battery", "winter_top_off"})
_HALF_A_YEAR = 183
# Countries whose winter falls into the middle of the year (geography, from memory).
_SOUTHERN = ("AR", "AU", "BO", "BW", "CL", "LS", "MG", "MZ", "NA", "NZ", "PE", "PY", "SZ", "UY", "ZA", "ZM", "ZW")


@dataclass(frozen=True)
class Season:
    """The days before one winter, both included."""

    from_on: date
    until_on: date

    def opens_for(self, phone_id: int) -> date:
        """A phone's first day: spread over the first half, so that not everybody comes by in the same week."""
        half = (self.until_on - self.from_on).days // 2
        return self.from_on + timedelta(days=int(drawn(f"before winter {self.from_on}", phone_id) * (half + 1)))


def before_winter(shop: Shop, today: date) -> Season | None:
    """The season that `today` lies in; None where it lies in none, or hardly anybody has a winter there."""
    for year in (today.year - 1, today.year):
        found = _of_year(shop, year)
        if found and found.from_on <= today <= found.until_on:
            return found
    return None


def next_before_winter(shop: Shop, today: date) -> Season | None:
    """The first season that begins after `today`."""
    found = [_of_year(shop, year) for year in range(today.year - 1, today.year + 3)]
    return min((one for one in found if one and one.from_on > today), key=lambda one: one.from_on, default=None)


def _of_year(shop: Shop, year: int) -> Season | None:
    rules = shop.rules
    is_set = rules.winter_from and rules.winter_until
    return _by_rules(rules.winter_from, rules.winter_until, year) if is_set else _by_place(shop, year)


def _by_rules(from_on: str, until_on: str, year: int) -> Season:
    """Month and day of each; an end before the beginning lies in the next year."""
    begins = date.fromisoformat(f"{year}-{from_on}")
    ends = date.fromisoformat(f"{year}-{until_on}")
    return Season(begins, ends if ends >= begins else date.fromisoformat(f"{year + 1}-{until_on}"))


def _by_place(shop: Shop, year: int) -> Season | None:
    usual = tire_seasons(shop.state if shop.country == "US" else None)
    if not usual.is_changed_in_winter:
        return None
    begins = date(year, 1, 1) + timedelta(days=int(usual.winter_begins))
    if shop.country in _SOUTHERN:
        begins -= timedelta(days=_HALF_A_YEAR)
    return Season(begins - timedelta(days=BEFORE_DAYS), begins)


def seasonal(picture: CarPicture, now: datetime) -> Iterator[Candidate]:
    """The reasons before winter, the battery first; once one of them was told, no other in that season."""
    today = picture.day(now)
    season = before_winter(picture.shop, today) if picture.shop.rules.writes_before_winter else None
    if season is None or today < season.opens_for(picture.phone.id):
        return
    told = [one for one in picture.invites if one.vehicle == picture.vehicle and picture.day(one.at) >= season.from_on]
    if any(one.reason in SEASONAL for one in told):
        return
    named = {at for one in told for at in one.items}
    key = f"car {picture.vehicle}, winter after {season.until_on}"
    for due in (one for one in picture.due if one.at not in named):
        if due.item == "battery" and _is_near(picture, due, now):
            says = f"before winter: {due.chance_joined:.0%} due within the joining days, so a check is offered"
            yield Candidate("winter_battery", key, says, (due.at,), chance=due.chance_joined)
    for due in (one for one in free_now(picture, now) if one.at not in named):
        if due.item == "washer_fluid" and not _is_known(picture, due, today):
            says = "before winter: the shop tops off washer fluid free"
            yield Candidate("winter_top_off", key, says, (due.at,), chance=due.chance_by_lead)


def _is_near(picture: CarPicture, due: DueItem, now: datetime) -> bool:
    """Near its limit by age or test, but not yet worth a text by the send rule, which then speaks for itself."""
    rules = picture.shop.rules
    is_near = due.chance_joined >= rules.join_at_chance and not triggers([due], rules)
    return is_near and item_stop(picture, due, now) is None


def _is_known(picture: CarPicture, due: DueItem, today: date) -> bool:
    days = [one.on for one in picture.work if one.item == due.item]
    days += [due.measured_on] if due.measured_on else []
    return any((today - day).days < WASHER_IS_KNOWN_DAYS for day in days)
