"""Booking requests: the list, and one request with a press each for what an advisor does about it."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from typing import Any, Literal

from flask import abort, render_template, request
from flask.typing import ResponseReturnValue

from followup.core.booking import WrongMove
from followup.core.wall import to_utc
from followup.web import forms
from followup.web.advisor.blueprint import blueprint
from followup.web.advisor.said import MEANINGS
from followup.web.house import house
from followup.web.login import me
from followup.web.security import for_roles
from followup.web.steps import ADVISORS, go, instant_of, or_404, read_or_400
from followup.web.words import shop
from followup.workflows import look_at_requests as looking
from followup.workflows import settle_requests as settling
from followup.workflows.note_running_late import note_running_late
from followup.workflows.settle_requests import By, NotFree, SomebodyWasFirst

CLOSED_BECAUSE = {
    "called off by the customer": "The customer called it off",
    "the customer could not be reached": "The customer could not be reached",
    "no time fits": "No time fits",
    "done elsewhere": "Done elsewhere",
    "entered by mistake": "Entered by mistake",
}


class Seen(forms.Form):
    """The version of the request that the page showed: whoever changed it since was first."""

    version: forms.Whole


class Confirm(Seen):
    """The time that was pressed, an instant."""

    start: forms.NeededWords


class Offer(Seen):
    """The times that were ticked."""

    starts: forms.Several = ()


class OtherTime(Seen):
    """A time that was typed, the shop's wall time. `does`: confirm it, or offer it."""

    day: forms.Day
    time: forms.Time
    does: Literal["confirm", "offer"]
    overrules: forms.Tick = False


class Close(Seen):
    """Why it is called off."""

    because: forms.NeededWords


class Parts(Seen):
    """What is known of the parts; the day only where they are ordered."""

    parts: Literal["in_stock", "not_needed", "order", "ordered"]
    parts_on: forms.MaybeDay = None


class Tell(Seen):
    """What the customer is told."""

    code: Literal["parts_in", "car_ready"]


class End(Seen):
    """How a booking ended."""

    end: Literal["kept", "missed"]


@blueprint.get("/requests")
@for_roles(*ADVISORS)
def requests() -> ResponseReturnValue:
    """What waits, what stands, what is over."""
    seen = looking.look_at_requests(house().store, me().shop_id)
    return render_template("advisor/requests.html", seen=seen)


@blueprint.get("/requests/<int:request_id>")
@for_roles(*ADVISORS)
def one_request(request_id: int) -> ResponseReturnValue:
    """One request."""
    return _page(request_id, {}, {})


@blueprint.post("/requests/<int:request_id>/confirm")
@for_roles(*ADVISORS)
def confirm(request_id: int) -> ResponseReturnValue:
    """Confirm one of the times that the page showed."""
    form = read_or_400(Confirm)
    start = instant_of(form.start)
    return _do(request_id, lambda: _confirm(request_id, form.version, start), "Confirmed. The customer is told.")


@blueprint.post("/requests/<int:request_id>/offer")
@for_roles(*ADVISORS)
def offer(request_id: int) -> ResponseReturnValue:
    """Offer up to three of the times that the page showed."""
    form = read_or_400(Offer)
    starts = [instant_of(one) for one in form.starts]
    if not 1 <= len(starts) <= settling.MOST_OFFERED:
        return go("Tick one, two or three times to offer.", "advisor.one_request", request_id=request_id)
    return _do(request_id, lambda: _offer(request_id, form.version, starts), "Offered. The times are held for a day.")


@blueprint.post("/requests/<int:request_id>/other-time")
@for_roles(*ADVISORS)
def other_time(request_id: int) -> ResponseReturnValue:
    """Confirm or offer a time that was typed; one that is not free can be confirmed all the same."""
    form, wrong = forms.read(OtherTime, request.form)
    if form is None:
        return _page(request_id, forms.shown_again(request.form), wrong, 422)
    start = to_utc(datetime.combine(form.day, form.time), shop().zone)
    try:
        if form.does == "offer":
            _offer(request_id, form.version, [start])
        else:
            _confirm(request_id, form.version, start, overrules=form.overrules)
    except (NotFree, SomebodyWasFirst, WrongMove) as not_done:
        return _page(request_id, forms.shown_again(request.form), {"": str(not_done)}, 409)
    except LookupError:
        abort(404)
    return go("Done. The customer is told.", "advisor.one_request", request_id=request_id)


@blueprint.post("/requests/<int:request_id>/close")
@for_roles(*ADVISORS)
def close(request_id: int) -> ResponseReturnValue:
    """Call it off."""
    form, wrong = forms.read(Close, request.form)
    if form is None:
        return _page(request_id, forms.shown_again(request.form), wrong, 422)
    closing = settling.close_request
    return _do(
        request_id,
        lambda: closing(
            house().store, me().shop_id, request_id, form.version, form.because[:200], _by(), house().now()
        ),
        "Closed.",
    )


@blueprint.post("/requests/<int:request_id>/parts")
@for_roles(*ADVISORS)
def parts(request_id: int) -> ResponseReturnValue:
    """Write down what is known of the parts."""
    form, wrong = forms.read(Parts, request.form)
    if form is not None and form.parts == "ordered" and form.parts_on is None:
        wrong = {"parts_on": "Give the day on which they are due."}
    if form is None or wrong:
        return _page(request_id, forms.shown_again(request.form), wrong, 422)
    due_on = form.parts_on if form.parts == "ordered" else None
    setting, known = settling.set_parts, form
    return _do(
        request_id,
        lambda: setting(
            house().store, me().shop_id, request_id, known.version, known.parts, due_on, _by(), house().now()
        ),
        "Noted.",
    )


@blueprint.post("/requests/<int:request_id>/tell")
@for_roles(*ADVISORS)
def tell(request_id: int) -> ResponseReturnValue:
    """The parts are in, or the car is ready."""
    form = read_or_400(Tell)
    return _do(
        request_id,
        lambda: settling.tell_about_visit(
            house().store, me().shop_id, request_id, form.version, form.code, _by(), house().now()
        ),
        "The customer is told.",
    )


@blueprint.post("/requests/<int:request_id>/late")
@for_roles(*ADVISORS)
def late(request_id: int) -> ResponseReturnValue:
    """The customer is running late."""
    read_or_400(Seen)
    or_404(looking.look_at_request(house().store, me().shop_id, request_id, house().now()))
    done = note_running_late(house().store, me().shop_id, request_id, me().staff_id, me().name, house().now())
    said = "Noted. The booking stands." if done else "This booking does not stand any more."
    return go(said, "advisor.one_request", request_id=request_id)


@blueprint.post("/requests/<int:request_id>/end")
@for_roles(*ADVISORS)
def end(request_id: int) -> ResponseReturnValue:
    """The customer came, or did not."""
    form = read_or_400(End)
    return _do(
        request_id,
        lambda: settling.end_booking(
            house().store, me().shop_id, request_id, form.version, form.end, _by(), house().now()
        ),
        "Written down.",
    )


def _confirm(request_id: int, version: int, start: datetime, *, overrules: bool = False) -> None:
    settling.confirm_request(
        house().store, me().shop_id, request_id, version, start, _by(), house().now(), overrules=overrules
    )


def _offer(request_id: int, version: int, starts: list[datetime]) -> None:
    settling.offer_times(house().store, me().shop_id, request_id, version, starts, _by(), house().now())


def _by() -> By:
    return By(me().staff_id, me().name)


def _do(request_id: int, act: Callable[[], None], said: str) -> ResponseReturnValue:
    """Act; where the shop is full or somebody was first nothing is lost, and the page as it stands now says so."""
    try:
        act()
    except (NotFree, SomebodyWasFirst, WrongMove) as not_done:
        return go(str(not_done), "advisor.one_request", request_id=request_id)
    except LookupError:
        abort(404)
    return go(said, "advisor.one_request", request_id=request_id)


def _page(request_id: int, given: dict[str, Any], wrong: dict[str, str], status: int = 200) -> ResponseReturnValue:
    seen = or_404(looking.look_at_request(house().store, me().shop_id, request_id, house().now()))
    reasons = list(CLOSED_BECAUSE.items())
    page = render_template(
        "advisor/request.html", seen=seen, given=given, wrong=wrong, reasons=reasons, meanings=list(MEANINGS.items())
    )
    return page, status
