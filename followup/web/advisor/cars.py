"""A car: its readings and due windows, why a text leaves or not, a booking by phone, a visit, a recall."""

from __future__ import annotations

from datetime import date, datetime, timedelta
from typing import Any, Literal

from flask import abort, render_template, request
from flask.typing import ResponseReturnValue

from followup.core.booking import WrongMove
from followup.core.item import in_use
from followup.core.planning.best_hour import says
from followup.core.rotation import rotation_words
from followup.core.vehicle import WALKING_ORDER
from followup.core.wall import to_utc
from followup.web import forms
from followup.web.advisor import said as say
from followup.web.advisor.blueprint import blueprint
from followup.web.advisory_lines import advisory_lines
from followup.web.due_chart import DueDots, DueMark, lay_out
from followup.web.house import house
from followup.web.login import me
from followup.web.security import for_roles
from followup.web.steps import ADVISORS, go, instant_of, or_404
from followup.web.why import why_shown
from followup.web.words import catalogue, local, shop
from followup.workflows import enter_recall, keep_visit, look_at_requests
from followup.workflows import look_at_car as looking
from followup.workflows.look_at_car import CarPage, DueRow, PhonePlan
from followup.workflows.settle_requests import By, NotFree, book_by_phone

# An item at a position, in the value of a tick.
AT = "@"
# What the picture shows at most: 30 months, a little less so that its last month has room.
HORIZON = timedelta(days=900)


class Booking(forms.Form):
    """What was agreed by phone or at the counter: one of the free times, or a day and a time that were typed."""

    person_id: forms.Whole
    start: forms.Words = ""
    day: forms.MaybeDay = None
    time: forms.MaybeTime = None
    came_from: Literal["phone", "counter"] = "phone"
    items: forms.Several = ()
    needs: forms.Several = ()
    note: forms.Words = ""
    overrules: forms.Tick = False


class Recall(forms.Form):
    """A recall that staff found."""

    code: forms.NeededWords
    done_by: forms.NeededWords


class Opening(forms.Form):
    """The odometer as the car comes in, if somebody read it."""

    odometer: forms.MaybeWhole = None


@blueprint.get("/cars/<int:vehicle_id>")
@for_roles(*ADVISORS)
def car(vehicle_id: int) -> ResponseReturnValue:
    """One car."""
    return _page(vehicle_id, {}, {})


@blueprint.get("/cars/<int:vehicle_id>/book")
@for_roles(*ADVISORS)
def ask_booking(vehicle_id: int) -> ResponseReturnValue:
    """The form for a booking by phone."""
    return _booking_page(vehicle_id, {}, {})


@blueprint.post("/cars/<int:vehicle_id>/book")
@for_roles(*ADVISORS)
def book(vehicle_id: int) -> ResponseReturnValue:
    """Book it; invites about the car stop in the same second."""
    form, wrong = forms.read(Booking, request.form)
    seen = _seen(vehicle_id)
    if form is not None and not form.start:
        missing = [name for name in ("day", "time") if getattr(form, name) is None]
        wrong = dict.fromkeys(missing, "Take one of the free times, or fill this in.")
    if form is None or wrong:
        return _booking_page(vehicle_id, forms.shown_again(request.form), wrong, 422)
    if form.person_id not in [one.person_id for one in seen.drivers]:
        abort(400)
    known = catalogue()
    items = [(code, position) for code, _, position in (one.partition(AT) for one in form.items) if code in known]
    needs = [one for one in form.needs if one in say.NEEDS]
    try:
        made = book_by_phone(
            house().store, me().shop_id, form.person_id, vehicle_id, _start_of(form), items,
            By(me().staff_id, me().name), house().now(), came_from=form.came_from, note=form.note, needs=needs,
            overrules=form.overrules,
        )  # fmt: skip
    except (NotFree, WrongMove) as not_done:
        return _booking_page(vehicle_id, forms.shown_again(request.form), {"": str(not_done)}, 409)
    return go("Booked. Invites about this car have stopped.", "advisor.one_request", request_id=made)


def _start_of(form: Booking) -> datetime:
    """The time that was typed, else the free one that was chosen."""
    if form.day is not None and form.time is not None:
        return to_utc(datetime.combine(form.day, form.time), shop().zone)
    return instant_of(form.start)


@blueprint.post("/cars/<int:vehicle_id>/visits")
@for_roles(*ADVISORS)
def open_visit(vehicle_id: int) -> ResponseReturnValue:
    """The car is here."""
    form, wrong = forms.read(Opening, request.form)
    if form is None:
        return _page(vehicle_id, forms.shown_again(request.form), wrong, 422)
    odometer = None if form.odometer is None else float(form.odometer)
    visit_id = or_404(
        keep_visit.open_visit(house().store, me().shop_id, vehicle_id, odometer, me().name, house().now())
    )
    return go("The visit is open. No invite leaves while it is.", "advisor.visit", visit_id=visit_id)


@blueprint.post("/cars/<int:vehicle_id>/recalls")
@for_roles(*ADVISORS)
def recall(vehicle_id: int) -> ResponseReturnValue:
    """Enter a recall."""
    form, wrong = forms.read(Recall, request.form)
    if form is None:
        return _page(vehicle_id, forms.shown_again(request.form), wrong, 422)
    _seen(vehicle_id)
    done = enter_recall.enter_recall(
        house().store, me().shop_id, vehicle_id, form.code[:200], form.done_by[:200], me().name, house().now()
    )
    return go("Entered." if done else "It was entered before.", "advisor.car", vehicle_id=vehicle_id)


def _seen(vehicle_id: int) -> CarPage:
    needs = house().needs_registration
    return or_404(looking.look_at_car(house().store, me().shop_id, vehicle_id, house().now(), needs_registration=needs))


def _page(vehicle_id: int, given: dict[str, Any], wrong: dict[str, str], status: int = 200) -> ResponseReturnValue:
    seen = _seen(vehicle_id)
    beyond = [(one.item, one.position) for one in seen.due if not _has_near_date(one, seen.today)]
    charts = _charts(seen)
    whys = [
        why_shown(one.window, say.item(one.item, one.position), one.condition, one.legal, seen.today)
        for one in (*seen.due, *seen.stored)
    ]
    return render_template(
        "advisor/car.html", seen=seen, charts=charts, beyond=beyond, whys=whys, given=given, wrong=wrong,
        advisories=advisory_lines(seen.advisories, seen.vehicle, seen.today), rotation=rotation_words(seen.vehicle),
        hour_says=hour_says,
    ), status  # fmt: skip


def hour_says(plan: PhonePlan) -> str:
    """Why a text that is planned now leaves at its hour; "" where hours are not chosen."""
    text = plan.decision.text
    return says(text.leaving) if text and text.leaving else ""


def _has_near_date(due: DueRow, today: date) -> bool:
    """Whether the picture would show at least one of its dots."""
    return any(on is not None and on <= today + HORIZON for on in due.dates)


def _charts(seen: CarPage) -> list[tuple[str, Any]]:
    """One picture of all items that have a date in sight, with what is planned and booked."""
    marks = [DueMark(local(one.at).date(), "text", f"planned text, {one.words}") for one in seen.ahead]
    marks += [
        DueMark(local(one.slot_at).date(), "booking", f"booking, {one.status}")
        for one in seen.bookings
        if one.slot_at and one.state in ("asked", "offered", "confirmed")
    ]
    rows = [
        DueDots(say.item(one.item, one.position), one.dates, one.early_on, one.likely_on, one.late_on)
        for one in seen.due
        if _has_near_date(one, seen.today)
    ]
    return [("All items with a date", lay_out(rows, marks, seen.today))] if rows else []


def _booking_page(
    vehicle_id: int, given: dict[str, Any], wrong: dict[str, str], status: int = 200
) -> ResponseReturnValue:
    seen = _seen(vehicle_id)
    ticked = set(request.form.getlist("items")) or {
        f"{one.item}{AT}{one.position}" for one in seen.due if one.condition in ("due now", "due soon")
    }
    offered = [(f"{one.item}{AT}{one.position}", say.item(one.item, one.position), one.condition) for one in seen.due]
    known = {(one.item, one.position) for one in seen.due}
    offered += [
        (f"{item.code}{AT}", say.item(item.code), "")
        for item in in_use(catalogue())
        if item.exists_on(seen.vehicle) and not any(code == item.code for code, _ in known)
    ]
    wanted = [(code, position) for code, _, position in (one.partition(AT) for one in ticked)]
    free = look_at_requests.look_at_free_times(house().store, me().shop_id, wanted, house().now())
    return render_template(
        "advisor/book.html", seen=seen, free=free, offered=offered, ticked=ticked,
        needs=set(request.form.getlist("needs")),
        given={"came_from": "phone", "person_id": seen.whom.person_id, **given}, wrong=wrong,
    ), status  # fmt: skip


POSITIONS = [(position, say.POSITIONS[position] or "all, or none") for position in ("", *WALKING_ORDER[:-1])]
