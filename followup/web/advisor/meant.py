"""Say what a customer meant by a text that was read wrongly: chosen, confirmed, kept."""

from __future__ import annotations

from datetime import datetime

from flask import render_template, request
from flask.typing import ResponseReturnValue

from followup.core.replies.contract import Meant
from followup.core.replies.meaning import MEANINGS
from followup.web import forms
from followup.web.advisor.blueprint import blueprint
from followup.web.advisor.said import MEANINGS as MEANING_WORDS
from followup.web.house import house
from followup.web.login import me
from followup.web.security import for_roles
from followup.web.steps import ADVISORS, go, or_404
from followup.workflows import correct_reading as correcting
from followup.workflows.take_back_consent import take_back_consent

SAID = {
    "stop": "Kept. The texts to this number are stopped.",
    "symptom": "Kept. An alert is on the list: call the customer now.",
    "cancel": "Kept. Close the request or the booking if the customer called it off.",
}


class WasMeant(forms.Form):
    """The meaning that was chosen; the time only where one was named. `request_id`: the page to come back to."""

    meaning: forms.NeededWords
    day: forms.MaybeDay = None
    time: forms.MaybeTime = None
    request_id: forms.MaybeWhole = None


@blueprint.get("/texts/<int:inbound_id>/meant")
@for_roles(*ADVISORS)
def meant(inbound_id: int) -> ResponseReturnValue:
    """The text, what was read of it, and what may have been meant."""
    return _page(inbound_id, {}, {})


@blueprint.post("/texts/<int:inbound_id>/meant")
@for_roles(*ADVISORS)
def keep_meant(inbound_id: int) -> ResponseReturnValue:
    """Keep what was meant."""
    form, wrong = forms.read(WasMeant, request.form)
    if form is not None and form.meaning not in MEANINGS:
        wrong = {"meaning": "Choose what was meant."}
    if form is not None and form.time is not None and form.day is None:
        wrong = {"day": "Give the day of that time, or leave the time out."}
    if form is None or wrong:
        return _page(inbound_id, forms.shown_again(request.form), wrong, 422)
    seen = or_404(correcting.look_at_reading(house().store, me().shop_id, inbound_id))
    now = house().now()
    if form.meaning == "stop" and seen.phone_id is not None:
        take_back_consent(
            house().store, me().shop_id, seen.phone_id, "text", seen.text[:1000], me().name, now, house().ledger_secret
        )
    correcting.correct_reading(
        house().store, me().shop_id, inbound_id, Meant(meaning=form.meaning, start=_start(form)), me().staff_id, now
    )
    said = SAID.get(form.meaning, "Kept. It helps to read such texts rightly.")
    if form.request_id is not None:
        return go(said, "advisor.one_request", request_id=form.request_id)
    return go(said, "advisor.meant", inbound_id=inbound_id)


def _start(form: WasMeant) -> str | None:
    """The start as the contract writes it; the day alone where no time was given."""
    if form.day is None:
        return None
    return datetime.combine(form.day, form.time).isoformat(timespec="minutes") if form.time else form.day.isoformat()


def _page(inbound_id: int, given: dict[str, object], wrong: dict[str, str], status: int = 200) -> ResponseReturnValue:
    seen = or_404(correcting.look_at_reading(house().store, me().shop_id, inbound_id))
    page = render_template(
        "advisor/meant.html", seen=seen, given=given, wrong=wrong, meanings=list(MEANING_WORDS.items())
    )
    return page, status
