"""The coming weeks: what each holds beside what is booked and expected, and which invites wait for room."""

from __future__ import annotations

from datetime import date

from flask import render_template
from flask.typing import ResponseReturnValue

from followup.core.planning.pacing.room import CHECK_IN
from followup.web.house import house
from followup.web.login import me
from followup.web.manager.blueprint import blueprint
from followup.web.manager.rules_form import SKILLS
from followup.web.security import for_roles
from followup.web.steps import MANAGERS
from followup.web.weeks_chart import WeeksChart, lay_out
from followup.web.words import MONTHS, count, number
from followup.workflows.look_at_weeks import WeekOf, WeeksPage, look_at_weeks

HOW = {
    "all fit": "each leaves in the week in which it comes up",
    "linear program": "what costs most by waiting waits least",
    "regret": "what costs most by waiting goes first",
}


@blueprint.get("/weeks")
@for_roles(*MANAGERS)
def weeks() -> ResponseReturnValue:
    """Twelve weeks from this one on."""
    seen = look_at_weeks(house().store, me().shop_id, house().now())
    return render_template(
        "manager/weeks.html", seen=seen, charts={name: chart(found) for name, found in seen.weeks.items()},
        title_of=title_of, state=state_words(seen), fullest=fullest_words(seen), hours=hours, week_words=week_words,
        leaving=list(zip([one.begins_on for one in next(iter(seen.weeks.values()))], seen.leaving, strict=True)),
    )  # fmt: skip


def week_words(begins_on: date) -> str:
    """A week by its Monday: `Dec 7`."""
    return f"{MONTHS[begins_on.month - 1]} {begins_on.day}"


def fullest_words(seen: WeeksPage) -> str:
    """Where room is shortest: `The fullest is the week of Nov 30: 40 of 61.2 hours general.`"""
    name, one = max(
        ((name, one) for name, found in seen.weeks.items() for one in found if one.holds),
        key=lambda named: named[1].used / named[1].holds,
        default=("", None),
    )
    if one is None:
        return "No week has hours or check-in times: they are set under When we text."
    if not one.used:
        return "Nothing is booked or expected yet."
    what = "check-in times" if name == CHECK_IN else f"labor hours, {SKILLS.get(name, name).lower()}"
    return f"The fullest is the week of {week_words(one.begins_on)}: {hours(one.used)} of {hours(one.holds)} {what}."


def chart(found: tuple[WeekOf, ...]) -> WeeksChart:
    """The picture of one thing that is used up."""
    return lay_out([(one.begins_on, one.holds, one.booked, one.out, one.placed) for one in found])


def title_of(name: str) -> str:
    """What is used up, as a heading; a skill of the shop's own keeps its name."""
    return "Check-in times" if name == CHECK_IN else f"{SKILLS.get(name, name.capitalize())}: labor hours"


def hours(value: float) -> str:
    """To a tenth."""
    return number(round(value, 1)) if round(value, 1) else "0"


def state_words(seen: WeeksPage) -> str:
    """How far invites are paced, in a sentence or two."""
    if not seen.is_paced:
        return "Invites are not paced: each leaves when it comes up. Pacing is switched on under When we text."
    if seen.placed_at is None:
        return "Invites have not been placed yet; it is done each night, and at the next look where it was missed."
    told = f"Each night invites are placed in the weeks that have room for them: {HOW.get(seen.how, seen.how)}."
    if not seen.waiting_count:
        return f"{told} None waits for room now."
    past = f", {seen.postponed} of them past these weeks" if seen.postponed else ""
    return f"{told} {count(seen.waiting_count, 'invite waits', 'invites wait')} for room{past}."
