"""A member's own agreement to be texted about alerts: each for themselves, whatever their role."""

from __future__ import annotations

from flask import flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from followup.web import forms
from followup.web.house import house
from followup.web.login import me
from followup.web.owner.blueprint import blueprint
from followup.web.security import for_everyone_signed_in
from followup.workflows.keep_alert_phone import alert_phone, keep_alert_phone


class AlertPhone(forms.Form):
    """The number, and the tick without which it is not kept."""

    phone: forms.Words = ""
    agrees: forms.Tick = False


@blueprint.get("/my-alerts")
@for_everyone_signed_in
def my_alerts() -> ResponseReturnValue:
    """Where this member takes alerts."""
    return _page({"phone": alert_phone(house().store, me().shop_id, me().staff_id) or ""}, {})


@blueprint.post("/my-alerts")
@for_everyone_signed_in
def keep_my_alerts() -> ResponseReturnValue:
    """Keep the number, or take it back."""
    form, wrong = forms.read(AlertPhone, request.form)
    if form is not None and form.phone and not form.agrees:
        wrong = {"agrees": "Tick this, or leave the number empty."}
    if form is not None and not wrong:
        why_not = keep_alert_phone(house().store, me().shop_id, me().staff_id, me().name, form.phone, house().now())
        wrong = {"phone": why_not} if why_not else {}
    if form is None or wrong:
        return _page(forms.shown_again(request.form), wrong, 422)
    flash("Alerts are texted to you." if form.phone else "No alert is texted to you; you see them on the pages.")
    return redirect(url_for("owner.my_alerts"), 303)


def _page(given: dict[str, str], wrong: dict[str, str], status: int = 200) -> ResponseReturnValue:
    return render_template("owner/my_alerts.html", given=given, wrong=wrong), status
