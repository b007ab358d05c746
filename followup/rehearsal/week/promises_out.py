"""What is promised of texts that leave: none lost, none twice, each in its hours, with consent, seldom enough.

Written without the planning code, from the trade's rules and the law: what a planner gets wrong its own functions would
get wrong here too. Hours and numbers are those of the shop's rules, as its manager set them.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterator
from datetime import date, datetime, time, timedelta
from itertools import pairwise
from zoneinfo import ZoneInfo

from followup.rehearsal.faults.provider import Post
from followup.rehearsal.week.broken import Broken
from followup.rehearsal.week.record import Recorded
from followup.storage.rows import Row

# What may take so long: the last look after a text that nobody knows of, with the steps of time between.
_COMES_TO_AN_END = timedelta(hours=2)
_A_MOMENT = timedelta(minutes=30)
_DAY = timedelta(days=1)
# Which consent a reason needs (the trade's rules); texts about a visit need that for visits, or were asked for.
_COVER = {
    "due_work": "upkeep", "odometer_question": "upkeep", "missed_visit": "upkeep", "after_visit": "upkeep",
    "recall": "upkeep", "free_service": "offers", "winter_battery": "upkeep", "winter_top_off": "offers",
    "set_change": "upkeep", "long_unseen": "offers",
}  # fmt: skip
# Zones of the area codes of the demo's town, by the numbering plan (from memory).
_ZONES = {
    **dict.fromkeys(("217", "309", "312", "314", "608", "618", "815"), "America/Chicago"),
    "206": "America/Los_Angeles", "212": "America/New_York",
}  # fmt: skip
# 47 CFR 64.1200(c)(1): at the place of who is called.
_LAW = (time(8), time(21))
_WEEKDAYS = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")
# What leaves at any hour beside an answer to somebody who waits.
_ANY_HOUR = ("caution_", "opted_in", "stopped", "ask_confirm_stop")


def none_lost(it: Recorded) -> Iterator[Broken]:
    """Every planned text ended in a state that is true, or waits rightly."""
    asked = {post.public_id for post in it.posts}
    taken = {post.public_id for post in it.posts if post.sid}
    refused = {post.public_id for post in it.posts if post.fate.is_proven_refusal}
    for number in it.reasons_without_text:
        yield Broken("lost", f"reason {number} has no text")
    for row in it.texts:
        about = f"text {row['id']} ({row['reason']}, {row['state']}, {row['state_because']})"
        of = row["number"], row["due_at"]
        if row["state"] == "sent" and row["public_id"] not in taken:
            yield Broken("lost", f"{about} was not taken by the provider", *of)
        elif row["state"] == "failed" and row["public_id"] not in refused:
            yield Broken("lost", f"{about} was not refused by the provider", *of)
        elif row["state"] == "dropped" and not row["state_because"]:
            yield Broken("lost", f"{about} was dropped without a reason", *of)
        elif row["state"] in ("planned", "dropped") and row["public_id"] in taken:
            yield Broken("lost", f"{about} was taken by the provider", *of)
        elif row["state"] in ("claimed", "in_flight", "planned") and row["due_at"] < it.ends_at - _A_MOMENT:
            yield Broken("lost", f"{about} was due at {row['due_at']} and nothing came of it", *of)
        elif row["state"] == "unknown" and row["in_flight_at"] < it.ends_at - _COMES_TO_AN_END - _away(it):
            yield Broken("lost", f"{about} is in doubt since {row['in_flight_at']}", *of)
        elif row["state"] == "held" and (row["public_id"] not in asked and row["public_id"] in it.reported):
            yield Broken("lost", f"{about} is held although its delivery was reported", *of)


def _away(it: Recorded) -> timedelta:
    spans = [one.provider_away for one in it.troubles.each if one.provider_away]
    return max((span.to_at - span.from_at for span in spans), default=timedelta(0))


def none_twice(it: Recorded) -> Iterator[Broken]:
    """No text was taken twice, and nobody got the same words again without having written in between."""
    last = {post.public_id: post for post in it.posts if post.sid}
    for which, count in Counter(post.public_id for post in it.posts if post.sid).items():
        if count > 1:
            yield Broken("twice", f"{which} was taken {count} times", last[which].to, last[which].at)
    tries = Counter((row["number"], row["reason_id"], row["try_no"]) for post, row in it.taken() if post.sid)
    for (number, reason_id, try_no), count in tries.items():
        if count > 1:
            yield Broken("twice", f"{number[-4:]} got try {try_no} of reason {reason_id} {count} times", number)
    bound = {post.sid: post.public_id for post in it.posts if post.sid}
    for row in it.texts:
        if row["state"] == "sent" and bound.get(row["provider_id"]) != row["public_id"]:
            says = f"text {row['id']} is bound to {row['provider_id']}, which is another one's"
            yield Broken("twice", says, row["number"], row["in_flight_at"])
    for post in it.posts:
        if post.sid and not it.has_row(post):
            yield Broken("twice", f"{post.public_id} left and no text of the program is that", post.to, post.at)
    yield from _same_words(it)


def _same_words(it: Recorded) -> Iterator[Broken]:
    alike: dict[tuple[str, str], list[datetime]] = defaultdict(list)
    for post, _ in it.taken("answer", "visit", "invite"):
        alike[post.to, post.body].append(post.at)
    for (number, _), times in alike.items():
        wrote = it.wrote_at.get(number, [])
        for first, second in pairwise(sorted(times)):
            if second - first < _DAY and not any(first - _DAY < at <= second for at in wrote):
                yield Broken("twice", f"{number[-4:]} got the same words at {first} and {second}", number, second)


def in_hours(it: Recorded) -> Iterator[Broken]:
    """Invites and texts about visits in their hours wherever the phone may be; an answer at any hour only to somebody
    who wrote within the last half hour. By the clock that the program had."""
    zones = {row["number"]: {it.shop.zone, *row["zones"], *_zone(row["number"])} for row in it.phones}
    for post, row in it.taken("invite", "visit", "answer"):
        kind = row["kind"]
        if kind == "answer":
            if row["reason"].startswith(_ANY_HOUR) or _wrote_lately(it, post):
                continue
            kind = "visit"
        at = it.read_as(post.at)
        lands_by = at + max(post.taken_at - post.at, timedelta(seconds=post.valid_seconds - 1))
        for zone in zones.get(post.to, {it.shop.zone}):
            if not _is_open(it, kind, at, zone) or not _is_open(it, kind, lands_by, zone, at):
                says = f"{kind} {row['id']} ({row['reason']}) left at {_wall(at, zone)} in {zone}"
                yield Broken("hours", says, post.to, post.at)
                break


def _zone(number: str) -> set[str]:
    found = _ZONES.get(number[2:5])
    return {found} if found else set()


def _wrote_lately(it: Recorded, post: Post) -> bool:
    return any(at <= post.at <= at + _A_MOMENT for at in it.wrote_at.get(post.to, []))


def _is_open(it: Recorded, kind: str, at: datetime, zone: str, same_day_as: datetime | None = None) -> bool:
    local = at.astimezone(ZoneInfo(zone))
    if same_day_as is not None and local.date() != same_day_as.astimezone(ZoneInfo(zone)).date():
        return False
    rules = it.shop.rules
    hours = (rules.invite_hours if kind == "invite" else rules.visit_text_hours).get(_WEEKDAYS[local.weekday()])
    if hours is None or (kind == "invite" and (local.weekday() == 6 or local.date() in _federal_holidays(local.year))):
        return False
    opens, closes = (time.fromisoformat(one) for one in hours)
    return max(opens, _LAW[0]) <= local.time() < min(closes, _LAW[1])


def _federal_holidays(year: int) -> set[date]:
    """5 U.S.C. 6103(a), on their own days."""
    fixed = {date(year, *day) for day in ((1, 1), (6, 19), (7, 4), (11, 11), (12, 25))}
    moving = {_nth(year, 1, 0, 3), _nth(year, 2, 0, 3), _nth(year, 9, 0, 1), _nth(year, 10, 0, 2), _nth(year, 11, 3, 4)}
    last_of_may = date(year, 5, 31)
    return fixed | moving | {last_of_may - timedelta(days=last_of_may.weekday())}


def _nth(year: int, month: int, weekday: int, nth: int) -> date:
    first = date(year, month, 1)
    return first + timedelta(days=(weekday - first.weekday()) % 7 + 7 * (nth - 1))


def _wall(at: datetime, zone: str) -> str:
    return f"{at.astimezone(ZoneInfo(zone)):%a %Y-%m-%d %H:%M:%S}"


def with_consent(it: Recorded) -> Iterator[Broken]:
    """Every invite has the consent that its reason needs; a text about a visit has it, or was asked for."""
    for post, row in it.taken("invite", "visit"):
        cover = _COVER[row["reason"]] if row["kind"] == "invite" else "visits"
        if cover in _covers(it, row["number"], it.read_as(post.at)):
            continue
        if row["kind"] == "visit" and any(one.sender == post.to and one.at <= post.at for one in it.written):
            continue
        says = f"{row['kind']} {row['id']} ({row['reason']}) left without consent for {cover}"
        yield Broken("consent", says, post.to, post.at)


def _covers(it: Recorded, number: str, at: datetime) -> set[str]:
    """What was ever given for that number by then, without what was narrowed; stops are judged by themselves."""
    covers: set[str] = set()
    for entry in sorted(it.ledger.get(number, []), key=lambda one: one.at):
        if entry.at > at:
            break
        if entry.event == "narrowed":
            covers -= set(entry.covers)
        elif entry.event == "given" and entry.how != "imported_unproven":
            only_visits = entry.how == "spoken" or not entry.is_own_and_adult
            covers |= set(entry.covers) & ({"visits"} if only_visits else {"visits", "upkeep", "offers"})
    return covers


def seldom_enough(it: Recorded) -> Iterator[Broken]:
    """Spacing and caps of invites: only a second try of the same reason is nearer than the shop's spacing."""
    rules = it.shop.rules
    by_number: dict[str, list[tuple[datetime, Row]]] = defaultdict(list)
    for post, row in it.taken("invite"):
        by_number[post.to].append((post.at, row))
    # A text that was planned for the very day may leave an hour of the clock earlier than the one before it.
    slack = timedelta(hours=1) if any(one.clock_wrong for one in it.troubles.each) else timedelta(0)
    for number, invites in by_number.items():
        invites.sort(key=lambda one: one[0])
        for (first_at, first), (second_at, second) in pairwise(invites):
            is_same = first["reason_id"] == second["reason_id"]
            days = min(rules.try_again_days, rules.try_again_days_legal) if is_same else rules.invite_every_days
            if second_at - first_at < timedelta(days=days) - slack:
                yield Broken("spacing", f"{number[-4:]} was invited on {first_at} and {second_at}", number, second_at)
        for days, most in ((30, rules.invites_in_30_days), (365, rules.invites_a_year)):
            for at, _ in invites:
                count = sum(at - timedelta(days=days) + slack < other <= at for other, _ in invites)
                if count > most:
                    yield Broken("caps", f"{number[-4:]} got {count} invites in {days} days", number, at)
