"""What is promised of the shop's own days: no invite while the car is there, no more bookings than it can take."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterator
from datetime import date, datetime
from zoneinfo import ZoneInfo

from followup.rehearsal.week.broken import Broken
from followup.rehearsal.week.record import Recorded

_STANDS = ("confirmed", "kept", "missed")


def none_while_in_the_shop(it: Recorded) -> Iterator[Broken]:
    """No invite about a car that is in the shop."""
    for post, row in it.taken("invite"):
        for stay in it.stays:
            is_there = stay.opened_at < post.at and (stay.closed_at is None or post.at < stay.closed_at)
            if stay.vehicle_id == row["vehicle_id"] and is_there:
                says = f"invite {row['id']} left while its car was in the shop"
                yield Broken("visit", says, post.to, post.at)


def within_capacity(it: Recorded) -> Iterator[Broken]:
    """Bookings that stand fit the check-ins and labor hours of their days."""
    rules, zone = it.shop.rules, ZoneInfo(it.shop.zone)
    hours: dict[tuple[date, str], float] = defaultdict(float)
    check_ins: Counter[datetime] = Counter()
    loaners: Counter[date] = Counter()
    for row in it.requests:
        if row["state"] not in _STANDS or row["slot_at"] is None:
            continue
        day = row["slot_at"].astimezone(zone).date()
        for skill, needed in row["hours"].items():
            hours[day, skill] += needed
        loaners[day] += "loaner" in row["needs"]
        if "early_drop" not in row["needs"]:
            check_ins[row["slot_at"]] += 1
    for (day, skill), used in hours.items():
        if used > rules.labor_hours.get(skill, 0.0) * rules.labor_share + 1e-6:
            yield Broken("capacity", f"{used:.1f} hours of {skill} are booked on {day}")
    for at, count in check_ins.items():
        if count > rules.advisors_at_check_in:
            yield Broken("capacity", f"{count} cars are to be checked in at {at}", at=at)
    for day, count in loaners.items():
        if count > rules.loaners:
            yield Broken("capacity", f"{count} loaners are promised on {day}")
