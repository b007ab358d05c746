"""The inspection form: a car that is known or a new one, the sheet, work, advice and the visit; kept in one press.

What is typed becomes one line of the inspection contract and goes the way of every line. Faults are shown beside their
fields; doubts are asked about once, and the second press keeps the same content. Nothing typed is lost on the way: see
`drafts.py`.
"""

from __future__ import annotations

import hashlib
from typing import Any

from flask import abort, redirect, request, url_for
from flask.typing import ResponseReturnValue

from followup.web.carried import carried_over
from followup.web.house import house
from followup.web.login import me
from followup.web.security import for_roles
from followup.web.technician import drafts
from followup.web.technician.blueprint import blueprint
from followup.web.technician.entered import Entered, read_sheet
from followup.web.technician.form_page import (
    EVERYBODY,
    Given,
    InspectionForm,
    beginning,
    known,
    open_form,
    part_asked,
    show_form,
)
from followup.web.technician.typed import as_typed, shows_all
from followup.workflows.keep_visit import close_visit
from followup.workflows.look_at_inspection_form import look_at_form, look_at_result

NOTHING_READ = "Nothing was measured yet: fill in at least one field of the sheet."


@blueprint.route("/inspect", methods=["GET", "POST"])
@for_roles(*EVERYBODY)
@carried_over(drafts.go_on)
def inspect_new() -> ResponseReturnValue:
    """A car that was never here."""
    return _answer(open_form(None, part_asked(request.args)))


@blueprint.route("/cars/<int:vehicle_id>/inspect", methods=["GET", "POST"])
@for_roles(*EVERYBODY)
@carried_over(drafts.go_on)
def inspect(vehicle_id: int) -> ResponseReturnValue:
    """A car that is known."""
    return _answer(open_form(vehicle_id, part_asked(request.args)))


@blueprint.get("/inspections/<int:inspection_id>/correct")
@for_roles(*EVERYBODY)
def correct(inspection_id: int) -> ResponseReturnValue:
    """The form as it was filled; what is kept then takes the place of what was."""
    kept = look_at_result(house().store, me().shop_id, inspection_id, house().now())
    if kept is None:
        abort(404)
    form = open_form(kept.car.vehicle_id, kept.line.part)
    if not shows_all(kept.line, form.parts):
        abort(404)
    if offered := drafts.offer(form, corrects=kept.current_id):
        return offered
    typed = {**beginning(form), **as_typed(kept.line.told(), form.parts), "corrects": str(kept.current_id)}
    typed["stay"] = "open" if kept.line.visit else "day"
    return show_form(form, typed, {})


def _answer(form: InspectionForm) -> ResponseReturnValue:
    if request.method == "GET":
        return drafts.offer(form) or show_form(form, beginning(form), {})
    if why_not := drafts.taken_by_another(request.form):
        return show_form(form, known(form, request.form), {"": why_not}, status=409)
    # The same form sent twice is about one car and one customer, also where nobody gave them a number.
    own = hashlib.sha256(request.form.get("inspection", "").encode()).hexdigest()[:8]
    car = form.picture.car
    sent = request.form.copy()
    _fill_visit(sent)
    entered = read_sheet(sent, form.parts, me().name, car.vehicle.code if car else f"car {own}", f"customer {own}")
    wrong = dict(entered.wrong)
    if not wrong and not entered.line["readings"]:
        wrong[""] = NOTHING_READ
    if me().role == "technician" and sent.get("customer.phone"):
        wrong[""] = "Numbers are kept by an advisor."
    if wrong:
        return _show_again(form, known(form, request.form), wrong, 422)
    return _keep(form, entered, sent)


def _keep(form: InspectionForm, entered: Entered, sent: Given) -> ResponseReturnValue:
    customer = entered.line["customer"]
    if not sent.get("customer") and (number := drafts.number_typed_before(sent)):
        # An advisor began this form and typed a number, which a technician's page does not show.
        customer["phone"] = number
    mark = hashlib.sha256(entered.text.encode()).hexdigest()
    # The second press counts for what was looked at again, not for what was changed after.
    accepts = sent.get("accept") == "yes" and sent.get("looked_at") == mark
    kept = house().keep_inspection(me().shop_id, entered.text, me().name, accepts_doubtful=accepts, is_by_hand=True)
    if kept.outcome == "rejected":
        return _show_again(form, sent, entered.say(kept.faults), 422)
    if kept.outcome == "doubtful":
        return _show_again(form, sent, entered.say(kept.doubts), 409, mark)
    if sent.get("stay") == "close":
        _close(kept.vehicle_id, entered.line.get("visit"))
    return redirect(url_for("technician.result", inspection_id=kept.inspection_id), 303)


def _show_again(
    form: InspectionForm, given: Given, wrong: dict[str, str], status: int, looked_at: str = ""
) -> ResponseReturnValue:
    """What could not be kept yet is kept as it was typed."""
    draft, sign = drafts.keep_typed(form, request.form)
    shown = {**given, **draft}
    return show_form(
        form, shown, wrong, status=status, looked_at=looked_at, sign=sign, arrived="yes" if draft else None
    )


def _close(vehicle_id: int, visit: str | None) -> None:
    seen = look_at_form(house().store, me().shop_id, vehicle_id, house().now())
    if seen and seen.car and seen.car.visit_id is not None and seen.car.visit == visit:
        close_visit(house().store, me().shop_id, seen.car.visit_id, None, me().name, house().now())


def _fill_visit(sent: Any) -> None:
    """An open visit has a name, ours where the shop gave none."""
    if sent.get("stay") in ("open", "close") and not str(sent.get("visit", "")).strip():
        sent["visit"] = f"visit {sent.get('inspection', '')}"
