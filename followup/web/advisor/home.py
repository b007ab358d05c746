"""Where this person's day begins: what needs a person, the most urgent first, and what is settled in one press."""

from __future__ import annotations

from typing import Any

from flask import render_template, request
from flask.typing import ResponseReturnValue

from followup.web import forms
from followup.web.advisor.blueprint import blueprint
from followup.web.house import house
from followup.web.login import me
from followup.web.security import for_roles
from followup.web.steps import ADVISORS, Nothing, go, or_404, read_or_400
from followup.workflows import answer_alert, look_at_today, settle_held_text

SETTLED_BEFORE = "It was settled in the meantime. Nothing was changed."


class Outcome(forms.Form):
    """How a call ended."""

    outcome: forms.NeededWords


@blueprint.get("/")
@for_roles(*ADVISORS)
def home() -> ResponseReturnValue:
    """What needs an answer, and what comes today."""
    seen = look_at_today.look_at_today(house().store, me().shop_id, house().now())
    return render_template("advisor/home.html", seen=seen)


@blueprint.get("/alerts/<int:alert_id>")
@for_roles(*ADVISORS)
def alert(alert_id: int) -> ResponseReturnValue:
    """One alert, with the form for how it ended."""
    return _alert_page(alert_id, {}, {})


@blueprint.post("/alerts/<int:alert_id>/calling")
@for_roles(*ADVISORS)
def calling(alert_id: int) -> ResponseReturnValue:
    """I am calling."""
    read_or_400(Nothing)
    or_404(look_at_today.look_at_alert(house().store, me().shop_id, alert_id))
    is_first = answer_alert.say_calling(house().store, me().shop_id, alert_id, me().staff_id, house().now())
    said = "Nobody else is told now. After the call, write down how it ended." if is_first else SETTLED_BEFORE
    return go(said, "advisor.alert", alert_id=alert_id)


@blueprint.post("/alerts/<int:alert_id>/outcome")
@for_roles(*ADVISORS)
def outcome(alert_id: int) -> ResponseReturnValue:
    """Write down how it ended; the alert is closed."""
    seen = or_404(look_at_today.look_at_alert(house().store, me().shop_id, alert_id))
    form, wrong = forms.read(Outcome, request.form)
    if form is None:
        return _alert_page(alert_id, forms.shown_again(request.form), wrong, 422)
    done = answer_alert.close_alert(
        house().store, me().shop_id, alert_id, form.outcome, me().staff_id, me().name, house().now()
    )
    then = "advisor.calls" if seen.kind in look_at_today.ON_THE_PHONE_LIST else "advisor.home"
    return go("Written down." if done else SETTLED_BEFORE, then)


@blueprint.post("/texts/<int:text_id>/again")
@for_roles(*ADVISORS)
def send_again(text_id: int) -> ResponseReturnValue:
    """A held text leaves once more."""
    read_or_400(Nothing)
    done = settle_held_text.send_again(house().store, me().shop_id, text_id, me().name, house().now())
    return go("It is planned again and leaves next." if done else SETTLED_BEFORE, "advisor.home")


@blueprint.post("/texts/<int:text_id>/leave")
@for_roles(*ADVISORS)
def leave_text(text_id: int) -> ResponseReturnValue:
    """A held text is left as it is."""
    read_or_400(Nothing)
    done = settle_held_text.leave_it(house().store, me().shop_id, text_id, me().name, house().now())
    return go("It is left as it is." if done else SETTLED_BEFORE, "advisor.home")


@blueprint.post("/letters/<int:letter_id>/settle")
@for_roles(*ADVISORS)
def settle_letter(letter_id: int) -> ResponseReturnValue:
    """Somebody looked at a text that fits nobody."""
    read_or_400(Nothing)
    done = settle_held_text.settle_letter(house().store, me().shop_id, letter_id, me().name, house().now())
    return go("Put away." if done else SETTLED_BEFORE, "advisor.home")


def _alert_page(alert_id: int, given: dict[str, Any], wrong: dict[str, str], status: int = 200) -> ResponseReturnValue:
    seen = or_404(look_at_today.look_at_alert(house().store, me().shop_id, alert_id))
    return render_template("advisor/alert.html", alert=seen, given=given, wrong=wrong), status
