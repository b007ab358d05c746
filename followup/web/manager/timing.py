"""When we text: every rule of the shop about times and numbers, its versions, and the way back to an old one."""

from __future__ import annotations

from typing import Any

from flask import flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from followup.core.planning.state_hours import STATE_HOURS
from followup.web import forms
from followup.web.hours_chart import lay_out
from followup.web.house import house
from followup.web.login import me
from followup.web.manager import rules_form
from followup.web.manager.blueprint import blueprint
from followup.web.security import for_roles
from followup.web.steps import MANAGERS, or_404, read_or_400
from followup.workflows.change_rules import bring_back, change_rules
from followup.workflows.look_at_hours import look_at_hours
from followup.workflows.look_at_timing import look_at_lead, look_at_timing

PAGE = "timing"
# The pages of a manager; the owner's switches are the owner's.
PAGES = ("timing", "wording", "duty")


class Back(forms.Form):
    """The newest version when the button was shown."""

    based_on: forms.Whole


@blueprint.get("/timing")
@for_roles(*MANAGERS)
def timing() -> ResponseReturnValue:
    """The rules as they stand."""
    return page(None, {})


@blueprint.post("/timing")
@for_roles(*MANAGERS)
def keep_timing() -> ResponseReturnValue:
    """Keep the rules as a new version."""
    news, wrong, rest = rules_form.read(rule_names(), request.form)
    if not wrong:
        done = change_rules(
            house().store, me().shop_id, [PAGE], news, rest["based_on"], me().name, rest["because"], house().now()
        )
        if done.version is not None:
            flash(f"Kept as version {done.version}. Planning goes by it from now on.")
            return redirect(url_for("manager.timing"), 303)
        wrong = dict(done.wrong)
    return page(forms.shown_again(request.form), wrong, 422)


@blueprint.post("/timing/versions/<int:version>/back")
@for_roles(*MANAGERS)
def back_to(version: int) -> ResponseReturnValue:
    """Make the rules as they were then, as a new version."""
    form = read_or_400(Back)
    try:
        done = bring_back(house().store, me().shop_id, version, form.based_on, me().name, house().now(), PAGES)
    except LookupError:
        return or_404(None)
    kept = f"The rules are as in version {version} again (0: as shipped), kept as version {done.version}."
    flash(kept if done.version else " ".join(done.wrong.values()))
    return redirect(url_for("manager.timing"), 303)


def rule_names() -> list[str]:
    """The rules of this page, in its order."""
    return [rule.name for _, rules in rules_form.groups_of(PAGE) for rule in rules]


def page(given: dict[str, Any] | None, wrong: dict[str, str], status: int = 200) -> ResponseReturnValue:
    """The page with what was typed (None: the rules as they stand), and what is wrong with it, by rule."""
    seen = look_at_timing(house().store, me().shop_id)
    groups = rules_form.groups_of(PAGE)
    if given is None:
        given = rules_form.shown(seen.shop.rules, [rule.name for _, rules in groups for rule in rules])
    # A version that somebody else kept meanwhile is seen in the list; sending once more goes by it.
    given = {**given, "based_on": seen.shop.rules_version}
    lead = look_at_lead(house().store, me().shop_id, house().now())
    hours = look_at_hours(house().store, me().shop_id, house().now())
    chart = lay_out([(one.hour, one.quick, one.is_open) for one in hours.hours])
    page = render_template(
        "manager/timing.html", seen=seen, lead=lead, hours=hours, hours_chart=chart, groups=groups, given=given,
        wrong=wrong, rules=rules_form.BY_NAME, in_words=rules_form.in_words, days=rules_form.DAY_NAMES,
        states=STATE_HOURS,
    )  # fmt: skip
    return page, status
