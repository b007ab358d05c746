"""The test phone: what a customer's phone shows, an answer typed on it, and the clock of a demonstration.

Only where texts stay on this machine. An answer goes the whole way: it is signed and posted over HTTP to the same hook
as a provider's, never handed to the program behind the door.
"""

from __future__ import annotations

import logging
from typing import Any

from flask import abort, flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from followup import clock
from followup.phone_numbers import NotANumber, read_number
from followup.web import forms
from followup.web.house import house
from followup.web.login import me
from followup.web.phone.blueprint import blueprint
from followup.web.security import for_everyone_signed_in
from followup.web.words import clock_time, day, local
from followup.workflows import look_at_test_phone as looking
from followup.workflows import move_clock as moving

_LOG = logging.getLogger(__name__)
POST_TIMEOUT_SECONDS = 10
STEPS = (
    ("day", "One day later"),
    ("week", "One week later"),
    ("three_weeks", "Three weeks later"),
    (moving.NEXT_MORNING, "To the next 10:30 am of a working day"),
)


class Answer(forms.Form):
    """What is typed on the phone."""

    words: forms.NeededWords


class Step(forms.Form):
    """How far the clock moves, and from which phone it was pressed."""

    step: forms.NeededWords
    number: forms.Words = ""


def is_played_here() -> bool:
    """Whether texts stay on this machine."""
    return bool(house().settings.transport == "test_phone")


@blueprint.before_request
def _only_where_texts_stay() -> None:
    if not is_played_here():
        abort(404)


@blueprint.get("/")
@for_everyone_signed_in
def phones() -> ResponseReturnValue:
    """Every phone with texts, the latest first."""
    asked, wrong = request.args.get("number", ""), {}
    if asked:
        number = _e164(asked)
        if number:
            return redirect(url_for("phone.one_phone", digits=number[1:]), 303)
        wrong = {"number": "This is no phone number that exists."}
    seen = looking.look_at_test_phones(house().store, me().shop_id)
    return render_template("phone/phones.html", seen=seen, given={"number": asked}, wrong=wrong, **_clock())


@blueprint.get("/<digits>")
@for_everyone_signed_in
def one_phone(digits: str) -> ResponseReturnValue:
    """What this phone shows."""
    return _page(digits, {}, {})


@blueprint.post("/<digits>")
@for_everyone_signed_in
def answer(digits: str) -> ResponseReturnValue:
    """The customer of this phone writes."""
    form, wrong = forms.read(Answer, request.form)
    if form is None:
        return _page(digits, forms.shown_again(request.form), wrong, 422)
    if not _post(_number_or_404(digits), form.words):
        wrong = {"words": "The hook did not take it. Is the web server reachable at its public address?"}
        return _page(digits, forms.shown_again(request.form), wrong, 502)
    return redirect(url_for("phone.one_phone", digits=digits, _anchor="write"), 303)


@blueprint.post("/clock")
@for_everyone_signed_in
def move() -> ResponseReturnValue:
    """Move the clock of the demonstration."""
    form, _ = forms.read(Step, request.form)
    if form is None or form.step not in {step for step, _ in STEPS} or not clock.can_be_moved():
        abort(400)
    at = local(moving.move_clock(house().store, me().shop_id, form.step, house().now()))
    flash(
        f"It is {day(at.date())}, {clock_time(at)} now. What is due leaves within some seconds, invites in their hours."
    )
    number = _e164(form.number) if form.number else None
    back = url_for("phone.one_phone", digits=number[1:]) if number else url_for("phone.phones")
    return redirect(back, 303)


def _post(number: str, words: str) -> bool:
    """Post to the hook as a provider would; False where it was not taken."""
    url, sent, headers = house().write_as_customer(me().shop_id, number, words)
    # A page must never carry texts to another machine, however the public address is set.
    if not clock.is_loopback(url):
        return False
    # It takes a tenth of a second, which no start of the pages has to wait for.
    import requests

    try:
        taken = requests.post(url, data=sent, headers=headers, timeout=POST_TIMEOUT_SECONDS)
    except requests.RequestException:
        _LOG.exception("the hook could not be reached from the test phone")
        return False
    return taken.status_code == 204


def _page(digits: str, given: dict[str, Any], wrong: dict[str, str], status: int = 200) -> ResponseReturnValue:
    screen = looking.look_at_test_phone(house().store, me().shop_id, _number_or_404(digits))
    page = render_template("phone/phone.html", screen=screen, digits=digits, given=given, wrong=wrong, **_clock())
    return page, status


def _clock() -> dict[str, Any]:
    return {"steps": STEPS if clock.can_be_moved() else (), "now": house().now()}


def _number_or_404(digits: str) -> str:
    number = _e164("+" + digits) if digits.isascii() and digits.isdigit() else None
    return number or abort(404)


def _e164(written: str) -> str | None:
    try:
        return read_number(written).e164
    except NotANumber:
        return None
