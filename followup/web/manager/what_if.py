"""What if: other rules tried on this shop's own cars before they are kept, told while it is worked out."""

from __future__ import annotations

from collections.abc import Generator, Iterator
from dataclasses import replace
from datetime import timedelta
from typing import Any

from flask import request, stream_template, stream_with_context
from flask.typing import ResponseReturnValue

from followup.core.shop import plain
from followup.core.wall import day_of
from followup.web import forms
from followup.web.house import house
from followup.web.login import me
from followup.web.manager import rules_form, timing
from followup.web.manager.blueprint import blueprint
from followup.web.security import CSRF_FIELD, for_roles
from followup.web.steps import MANAGERS
from followup.workflows.change_rules import check_rules
from followup.workflows.look_at_timing import look_at_timing
from followup.workflows.try_rules import Tried, try_rules

# More cars than a manager reads one by one.
MOST_CARS = 200
WEEKS_SHOWN = 12
# (label, name in an outcome, whether it is a share)
ROWS = (
    ("Texts a week", "texts", False),
    ("Visits from texts a week", "prompted", False),
    ("Visits of their own accord a week", "own", False),
    ("Labor hours a week", "hours_a_week", False),
    ("Stops in half a year", "stops", False),
    ("Visits from texts with nothing near its limit", "wasted", True),
    ("Visits with something past its action limit", "past_action", True),
    ("Visits with something past its legal limit", "past_legal", True),
)
COLUMNS = (("today", "Today's rules"), ("tried", "These rules"), ("reminder", "A reminder every six months"))


class Trying:
    """The work while it goes on: `steps` are per cent, then `done` is what came of it."""

    def __init__(self, work: Generator[float, None, Tried]) -> None:
        self._work = work
        self.done: Tried | None = None

    def steps(self) -> Iterator[int]:
        """Per cent that are done, as they are done."""
        self.done = yield from self._per_cent()

    def _per_cent(self) -> Generator[int, None, Tried]:
        while True:
            try:
                yield round(100 * next(self._work))
            except StopIteration as ended:
                found: Tried = ended.value
                return found


@blueprint.post("/timing/again")
@for_roles(*MANAGERS)
def change_further() -> ResponseReturnValue:
    """The rules as they were tried, to be changed once more."""
    _, wrong, _ = rules_form.read(timing.rule_names(), request.form)
    return timing.page(forms.shown_again(request.form), wrong, 422 if wrong else 200)


@blueprint.post("/timing/what-if")
@for_roles(*MANAGERS)
def what_if() -> ResponseReturnValue:
    """What these rules would bring, beside today's; nothing is kept."""
    names = timing.rule_names()
    news, wrong, _ = rules_form.read(names, request.form)
    shop = look_at_timing(house().store, me().shop_id).shop
    wrong = wrong or check_rules(replace(shop.rules, **news), shop)
    if wrong:
        return timing.page(forms.shown_again(request.form), wrong, 422)
    changed = {
        name: tuple(rules_form.in_words(name, one) for one in (getattr(shop.rules, name), news[name]))
        for name in names if plain(getattr(shop.rules, name)) != plain(news[name])
    }  # fmt: skip
    today = day_of(house().now(), shop.zone)
    trying = Trying(try_rules(house().store, me().shop_id, news, house().now()))
    again = [(name, value) for name, value in request.form.items(multi=True) if name != CSRF_FIELD]
    told: Any = stream_template(
        "manager/what_if.html", trying=trying, changed=changed, again=again, rows=ROWS, columns=COLUMNS,
        rules=rules_form.BY_NAME, skills=rules_form.SKILLS, most_cars=MOST_CARS,
        weeks=[(number, today + timedelta(weeks=number)) for number in range(WEEKS_SHOWN)],
    )  # fmt: skip
    return stream_with_context(told), 200, {"Content-Type": "text/html; charset=utf-8", "X-Accel-Buffering": "no"}
