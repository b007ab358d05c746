"""The fifteen-second form: which car, what was topped off, how much."""

from __future__ import annotations

from typing import Any

from flask import flash, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from followup.core.item import MILES_PER_KM
from followup.web import forms
from followup.web.house import house
from followup.web.login import me
from followup.web.security import for_roles
from followup.web.technician.blueprint import blueprint
from followup.workflows.forecast_windows import forecast_windows
from followup.workflows.keep_top_off import keep_top_off, what_is_topped_off
from followup.workflows.look_at_inspection_form import CarSeen, find_cars, look_at_form

NO_CAR = "No car fits this plate or name: look at it again."
SEVERAL = "Several cars fit: choose one."


class TopOff(forms.Form):
    """What was topped off. `car` is the chosen one where several fit `q`."""

    q: forms.Words = ""
    car: forms.MaybeWhole = None
    what: forms.Several = ()
    how_much: forms.Words = ""
    odometer: forms.MaybeWhole = None
    unit: forms.Words = "mi"


@blueprint.get("/top-off")
@for_roles("technician", "advisor", "manager", "owner")
def top_off() -> ResponseReturnValue:
    """The form; a link from a list names the car."""
    chosen = request.args.get("car", type=int)
    seen = look_at_form(house().store, me().shop_id, chosen, house().now()) if chosen else None
    return _page({"car": str(chosen)} if seen else {}, {}, [seen.car] if seen and seen.car else [])


@blueprint.post("/top-off")
@for_roles("technician", "advisor", "manager", "owner")
def keep_top_off_form() -> ResponseReturnValue:
    """Keep it, and make the car's windows anew."""
    form, wrong = forms.read(TopOff, request.form)
    given = {**forms.shown_again(request.form), "what": request.form.getlist("what")}
    if form is None:
        return _page(given, wrong, _fitting(str(given.get("q", "")), None), 422)
    fitting = _fitting(form.q, form.car)
    chosen = [one for one in fitting if form.car in (None, one.vehicle_id)]
    if len(chosen) != 1:
        return _page(given, {"car": SEVERAL} if chosen else {"q": NO_CAR}, fitting, 422)
    car = chosen[0]
    miles = None if form.odometer is None else form.odometer * (MILES_PER_KM if form.unit == "km" else 1.0)
    store, now = house().store, house().now()
    wrong = keep_top_off(store, me().shop_id, car.vehicle_id, form.what, form.how_much, miles, me().name, now)
    if wrong:
        return _page(given, wrong, fitting, 422)
    forecast_windows(store, me().shop_id, now, [car.vehicle_id])
    flash(f"Kept for {car.vehicle.label or car.vehicle.code}.")
    return redirect(url_for("technician.top_off"), 303)


def _fitting(words: str, chosen: int | None) -> list[CarSeen]:
    """Cars that fit the words, and the one that was chosen in any case."""
    found = find_cars(house().store, me().shop_id, words)
    seen = look_at_form(house().store, me().shop_id, chosen, house().now()) if chosen else None
    known = {one.vehicle_id for one in found}
    return [seen.car, *found] if seen and seen.car and seen.car.vehicle_id not in known else found


def _page(given: dict[str, Any], wrong: dict[str, str], cars: list[CarSeen], status: int = 200) -> ResponseReturnValue:
    only = cars[0].vehicle if len(cars) == 1 else None
    things = [
        (item.code, item.words, f"free here {much}".strip()) if much is not None else (item.code, item.words, "")
        for item, much in what_is_topped_off(house().store, me().shop_id, only)
    ]
    page = render_template("technician/top_off.html", given=given, wrong=wrong, cars=cars, things=things)
    return page, status
