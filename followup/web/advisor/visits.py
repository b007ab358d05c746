"""A visit at the counter: lines of work, recommendations with what was decided, and its closing."""

from __future__ import annotations

from typing import Any, Literal

from flask import render_template, request
from flask.typing import ResponseReturnValue

from followup.core.item import DID, in_use
from followup.web import forms
from followup.web.advisor import said as say
from followup.web.advisor.blueprint import blueprint
from followup.web.advisor.cars import POSITIONS
from followup.web.house import house
from followup.web.login import me
from followup.web.security import for_roles
from followup.web.steps import ADVISORS, go, or_404
from followup.web.words import catalogue
from followup.workflows import forecast_windows, keep_visit
from followup.workflows.keep_visit import Advice, WorkDone


class WorkForm(forms.Form):
    """One line of work."""

    item: forms.NeededWords
    position: forms.Words = ""
    did: forms.NeededWords


class AdviceForm(forms.Form):
    """One recommendation."""

    advised_item: forms.NeededWords
    advised_position: forms.Words = ""
    decision: Literal["approved", "declined", "later", "no_answer"]
    because: forms.Words = ""
    until: forms.MaybeDay = None


class Closing(forms.Form):
    """The odometer as the car leaves, if somebody read it."""

    odometer: forms.MaybeWhole = None


@blueprint.get("/visits/<int:visit_id>")
@for_roles(*ADVISORS)
def visit(visit_id: int) -> ResponseReturnValue:
    """One visit."""
    return _page(visit_id, {}, {})


@blueprint.post("/visits/<int:visit_id>/work")
@for_roles(*ADVISORS)
def add_work(visit_id: int) -> ResponseReturnValue:
    """Write down a line of work."""
    form, wrong = forms.read(WorkForm, request.form)
    _seen(visit_id)
    if form is not None:
        done = WorkDone(form.item, form.position, form.did)
        wrong = keep_visit.add_work(house().store, me().shop_id, visit_id, done, me().name, house().now())
    if form is None or wrong:
        return _page(visit_id, forms.shown_again(request.form), wrong, 422)
    return go("Written down.", "advisor.visit", visit_id=visit_id)


@blueprint.post("/visits/<int:visit_id>/advice")
@for_roles(*ADVISORS)
def add_advice(visit_id: int) -> ResponseReturnValue:
    """Write down a recommendation and what was decided."""
    form, wrong = forms.read(AdviceForm, request.form)
    _seen(visit_id)
    if form is not None:
        advice = Advice(
            form.advised_item, form.advised_position, form.decision, form.because or None, form.until, me().name
        )
        wrong = keep_visit.add_advice(house().store, me().shop_id, visit_id, advice, me().name, house().now())
        # The two forms of the page have fields of their own names, so that each error stands by its field.
        wrong = {{"item": "advised_item", "position": "advised_position"}.get(key, key): wrong[key] for key in wrong}
    if form is None or wrong:
        return _page(visit_id, forms.shown_again(request.form), wrong, 422)
    return go("Written down.", "advisor.visit", visit_id=visit_id)


@blueprint.post("/visits/<int:visit_id>/close")
@for_roles(*ADVISORS)
def close_visit(visit_id: int) -> ResponseReturnValue:
    """The car leaves; what was done to it is news for its forecast."""
    form, wrong = forms.read(Closing, request.form)
    _seen(visit_id)
    if form is None:
        return _page(visit_id, forms.shown_again(request.form), wrong, 422)
    odometer = None if form.odometer is None else float(form.odometer)
    vehicle_id = keep_visit.close_visit(house().store, me().shop_id, visit_id, odometer, me().name, house().now())
    if vehicle_id is None:
        return go("It was closed in the meantime.", "advisor.visit", visit_id=visit_id)
    forecast_windows.forecast_windows(house().store, me().shop_id, house().now(), [vehicle_id])
    return go("The visit is closed.", "advisor.car", vehicle_id=vehicle_id)


def _seen(visit_id: int) -> keep_visit.VisitPage:
    return or_404(keep_visit.look_at_visit(house().store, me().shop_id, visit_id))


def _page(visit_id: int, given: dict[str, Any], wrong: dict[str, str], status: int = 200) -> ResponseReturnValue:
    return render_template(
        "advisor/visit.html", seen=_seen(visit_id), given=given, wrong=wrong,
        items=[(item.code, item.words) for item in in_use(catalogue())], positions=POSITIONS,
        did=[(code, say.plain(code)) for code in DID], decisions=list(say.DECISIONS.items()),
        because=[("", "-"), *say.DECIDED_BECAUSE.items()],
    ), status  # fmt: skip
