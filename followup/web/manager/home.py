"""How it went: Monday's three lines first, then every count with what it counts."""

from __future__ import annotations

from datetime import timedelta

from flask import render_template, request
from flask.typing import ResponseReturnValue

from followup.web.house import house
from followup.web.login import me
from followup.web.manager.blueprint import blueprint
from followup.web.security import for_roles
from followup.web.steps import MANAGERS
from followup.web.words import count, number
from followup.workflows import look_at_trials as trying
from followup.workflows.look_at_results import ENOUGH_INVITES, ENOUGH_TEXTS, Results, Wait, look_at_results

PERIODS = {"7": "week", "30": "30 days", "90": "90 days", "365": "year"}
USUAL = "30"
CAME_FROM = {"text": "by text", "phone": "by phone", "counter": "at the counter"}
KINDS = {"invite": "invite", "visit": "about a visit", "answer": "answer"}


@blueprint.get("/")
@for_roles(*MANAGERS)
def home() -> ResponseReturnValue:
    """What the texts brought, and what waits."""
    asked = request.args.get("days", USUAL)
    days = asked if asked in PERIODS else USUAL
    seen = look_at_results(house().store, me().shop_id, house().now(), int(days))
    return render_template(
        "manager/home.html", seen=seen, days=days, periods=PERIODS, lines=monday_lines(seen), waited=waited,
        came_from=CAME_FROM, kinds=KINDS, enough=ENOUGH_TEXTS,
        group=trying.look_at_group(house().store, me().shop_id, house().now()), in_words=_of_group,
    )  # fmt: skip


def monday_lines(seen: Results) -> tuple[str, str, str]:
    """The three lines for Monday: what texts brought, what is sold and waits, and whether anybody was let down."""
    return _brought(seen), _sold(seen), _let_down(seen)


def _brought(seen: Results) -> str:
    got = seen.brought
    said = (
        f"{count(got.asked, 'booking')} asked for by text after {count(seen.invites, 'invite')} in {seen.days} days: "
        f"{got.confirmed} confirmed, {got.kept} kept, {got.missed} missed, {number(got.hours)} labor hours."
    )
    if seen.has_enough_invites:
        return said
    return f"{said} Too few invites to tell what they bring (under {ENOUGH_INVITES})."


def _sold(seen: Results) -> str:
    this_week, next_week = seen.weeks
    return (
        f"{number(this_week.sold)} of {number(this_week.planned)} planned labor hours are sold this week, "
        f"{number(next_week.sold)} of {number(next_week.planned)} next week; "
        f"{count(seen.cars_past_limit, 'car')} past a limit of brakes or tires without a booking."
    )


def _let_down(seen: Results) -> str:
    reply = f"{_waited('A reply', seen.reply_wait)} {_waited('A symptom', seen.symptom_wait)}"
    stops, complaints = count(seen.stops, "stop"), count(seen.complaints, "complaint")
    rate = seen.per_100(seen.stops), seen.per_100(seen.complaints)
    if rate[0] is None or rate[1] is None:
        too_few = f"too few for a rate (under {ENOUGH_TEXTS})"
        return f"{reply} {stops} and {complaints} on {count(seen.outgoing, 'text')}: {too_few}."
    return f"{reply} {rate[0]:.1f} stops and {rate[1]:.1f} complaints per 100 texts ({stops}, {complaints})."


def _waited(what: str, wait: Wait) -> str:
    if wait.worst is None:
        return f"{what} that needed a person: none."
    still = " and still waits" if wait.is_open else ""
    return f"{what} waited {waited(wait.worst)} for a person at worst{still}."


def _of_group(group: trying.GroupSeen) -> tuple[str, str, str]:
    """Who came without and with invites, and what may be concluded."""
    arms = [group.without[1], group.with_invites[1]]
    names = ("without invites", "with them")
    says = trying.in_words(group.verdict, arms, trying.ENOUGH_WITHOUT, "came", names)
    return trying.rate_in_words(*group.without), trying.rate_in_words(*group.with_invites), says


def waited(time: timedelta) -> str:
    """`5 min`, `2 h 10 min`, `3 days 4 h`."""
    minutes = int(time.total_seconds() // 60)
    if minutes < 60:
        return f"{minutes} min"
    hours, minutes = divmod(minutes, 60)
    if hours < 24:
        return f"{hours} h {minutes} min"
    return f"{count(hours // 24, 'day')} {hours % 24} h"
