"""The thread with a customer: dated lines beside the facts, a person's own words, consent, a pause."""

from __future__ import annotations

from datetime import timedelta
from typing import Any, Literal

from flask import render_template, request
from flask.typing import ResponseReturnValue

from followup.web import forms
from followup.web.advisor.blueprint import blueprint
from followup.web.advisor.said import at
from followup.web.house import house
from followup.web.login import me
from followup.web.security import for_roles
from followup.web.steps import ADVISORS, Nothing, go, or_404, read_or_400
from followup.web.words import today
from followup.workflows import look_at_thread as looking
from followup.workflows import pause_customer, take_back_consent, write_to_customer

PAUSED_FOR = timedelta(days=30)


class Words(forms.Form):
    """A person's own words."""

    words: forms.NeededWords


class TakeBack(forms.Form):
    """How the customer took the consent back, and in which words, if somebody wrote them down."""

    how: Literal["counter", "phone", "e-mail"]
    what: Literal["all", "but_visits"] = "all"
    words: forms.Words = ""


class Pause(forms.Form):
    """Whose invites are paused for a month, or go on."""

    person_id: forms.Whole
    does: Literal["pause", "end"]


@blueprint.get("/threads/<int:phone_id>")
@for_roles(*ADVISORS)
def thread(phone_id: int) -> ResponseReturnValue:
    """What was written, by whom and why."""
    return _page(phone_id, {}, {})


@blueprint.post("/threads/<int:phone_id>/write")
@for_roles(*ADVISORS)
def write(phone_id: int) -> ResponseReturnValue:
    """Send a person's own words."""
    form, wrong = forms.read(Words, request.form)
    if form is None:
        return _page(phone_id, forms.shown_again(request.form), wrong, 422)
    or_404(_seen(phone_id))
    done = write_to_customer.write_to_customer(
        house().store, me().shop_id, phone_id, form.words, me().staff_id, house().now(),
        needs_registration=house().needs_registration, secret=house().ledger_secret,
    )  # fmt: skip
    if done.leaves_at is None:
        return _page(phone_id, forms.shown_again(request.form), {"words": done.why_not or ""}, 422)
    said = "It leaves now." if done.leaves_at <= house().now() else f"It leaves {at(done.leaves_at)}."
    return go(
        f"{said} The thread is yours for 24 hours, or until you give it back.", "advisor.thread", phone_id=phone_id
    )


@blueprint.post("/threads/<int:phone_id>/give-back")
@for_roles(*ADVISORS)
def give_back(phone_id: int) -> ResponseReturnValue:
    """The machine answers again."""
    read_or_400(Nothing)
    or_404(write_to_customer.give_back(house().store, me().shop_id, phone_id, me().name, house().now()) or None)
    return go("Replies are answered by themselves again.", "advisor.thread", phone_id=phone_id)


@blueprint.post("/threads/<int:phone_id>/take-back")
@for_roles(*ADVISORS)
def take_back(phone_id: int) -> ResponseReturnValue:
    """The customer took the consent back in person."""
    form, wrong = forms.read(TakeBack, request.form)
    if form is None:
        return _page(phone_id, forms.shown_again(request.form), wrong, 422)
    or_404(
        take_back_consent.take_back_consent(
            house().store, me().shop_id, phone_id, form.how, form.words, me().name, house().now(),
            house().ledger_secret, keeps_visits=form.what == "but_visits",
        )
        or None
    )  # fmt: skip
    said = "No text leaves to this number any more." if form.what == "all" else "Only texts about visits leave."
    return go(said, "advisor.thread", phone_id=phone_id)


@blueprint.post("/threads/<int:phone_id>/pause")
@for_roles(*ADVISORS)
def pause(phone_id: int) -> ResponseReturnValue:
    """Pause the invites of a customer for a month, or let them go on."""
    form = read_or_400(Pause)
    until = today() + PAUSED_FOR if form.does == "pause" else None
    or_404(
        pause_customer.pause_customer(house().store, me().shop_id, form.person_id, until, me().name, house().now())
        or None
    )
    said = "No invite leaves for a month." if until else "Invites may leave again."
    return go(said, "advisor.thread", phone_id=phone_id)


def _page(phone_id: int, given: dict[str, Any], wrong: dict[str, str], status: int = 200) -> ResponseReturnValue:
    seen = or_404(_seen(phone_id))
    return render_template("advisor/thread.html", seen=seen, given=given, wrong=wrong), status


def _seen(phone_id: int) -> looking.ThreadPage | None:
    return looking.look_at_thread(
        house().store, me().shop_id, phone_id, house().now(), needs_registration=house().needs_registration,
        secret=house().ledger_secret,
    )  # fmt: skip
