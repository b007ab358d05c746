"""The inspection form: a car that is known or a new one, the sheet, work, advice and the visit; kept in one press.

What is typed becomes one line of the inspection contract and goes the way of every line. Faults are shown beside their
fields; doubts are asked about once, and the second press keeps the same content. Nothing typed is lost on the way.
"""

from __future__ import annotations

import hashlib
import secrets
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from flask import abort, redirect, render_template, request, url_for
from flask.typing import ResponseReturnValue

from followup.core.item import MILES_PER_KM
from followup.core.items import catalogue_of
from followup.core.rotation import rotation_words
from followup.core.vehicle import Vehicle
from followup.web import forms, words
from followup.web.house import house
from followup.web.login import me
from followup.web.security import for_roles
from followup.web.sheet import PARTS, PLACES, Part, families, sheet
from followup.web.technician import choices
from followup.web.technician.blueprint import blueprint
from followup.web.technician.entered import (
    MOST_ROWS,
    ROWS_SHOWN,
    VEHICLE_WORDS,
    VEHICLE_YES_NO,
    Entered,
    names_of,
    read_sheet,
)
from followup.web.technician.typed import as_typed, shows_all
from followup.workflows.keep_visit import close_visit
from followup.workflows.look_at_inspection_form import FormPicture, look_at_form, look_at_result
from followup.workflows.sign_in import Role

Given = Mapping[str, Any]
EVERYBODY: tuple[Role, ...] = ("technician", "advisor", "manager", "owner")
NOTHING_READ = "Nothing was measured yet: fill in at least one field of the sheet."


@dataclass(frozen=True)
class _Form:
    """One form as it stands: the car's picture, the part or both, where it is sent."""

    picture: FormPicture
    part: str | None
    action: str

    @property
    def parts(self) -> tuple[Part, ...]:
        """The sheet of the car; a new car's shows everything."""
        vehicle = self.picture.car.vehicle if self.picture.car else Vehicle("")
        return sheet(vehicle, self.part, self.picture.last, catalogue_of(self.picture.shop))


@blueprint.route("/inspect", methods=["GET", "POST"])
@for_roles(*EVERYBODY)
def inspect_new() -> ResponseReturnValue:
    """A car that was never here."""
    return _answer(_form(None, url_for("technician.inspect_new", part=_part())))


@blueprint.route("/cars/<int:vehicle_id>/inspect", methods=["GET", "POST"])
@for_roles(*EVERYBODY)
def inspect(vehicle_id: int) -> ResponseReturnValue:
    """A car that is known."""
    return _answer(_form(vehicle_id, url_for("technician.inspect", vehicle_id=vehicle_id, part=_part())))


@blueprint.get("/inspections/<int:inspection_id>/correct")
@for_roles(*EVERYBODY)
def correct(inspection_id: int) -> ResponseReturnValue:
    """The form as it was filled; what is kept then takes the place of what was."""
    kept = look_at_result(house().store, me().shop_id, inspection_id, house().now())
    if kept is None:
        abort(404)
    vehicle_id, part = kept.car.vehicle_id, kept.line.part
    form = _form(vehicle_id, url_for("technician.inspect", vehicle_id=vehicle_id, part=part), part)
    if not shows_all(kept.line, form.parts):
        abort(404)
    typed = {**_beginning(form), **as_typed(kept.line.told(), form.parts)}
    typed["stay"] = "open" if kept.line.visit else "day"
    return _page(form, typed, {})


def _part() -> str | None:
    part = request.args.get("part")
    return part if part in PARTS else None


def _form(vehicle_id: int | None, action: str, part: str | None = None) -> _Form:
    picture = look_at_form(house().store, me().shop_id, vehicle_id, house().now())
    if picture is None:
        abort(404)
    return _Form(picture, part or _part(), action)


def _answer(form: _Form) -> ResponseReturnValue:
    if request.method == "GET":
        return _page(form, _beginning(form), {})
    car = form.picture.car
    vehicle = car.vehicle.code if car else f"car {secrets.token_hex(4)}"
    sent = request.form.copy()
    _fill_visit(sent)
    entered = read_sheet(sent, form.parts, me().name, vehicle, f"customer {secrets.token_hex(4)}")
    wrong = dict(entered.wrong)
    if not wrong and not entered.line["readings"]:
        wrong[""] = NOTHING_READ
    if me().role == "technician" and sent.get("customer.phone"):
        wrong[""] = "Numbers are kept by an advisor."
    if wrong:
        return _page(form, _known(form), wrong, status=422)
    return _keep(form, entered, sent)


def _keep(form: _Form, entered: Entered, sent: Given) -> ResponseReturnValue:
    mark = hashlib.sha256(entered.text.encode()).hexdigest()
    # The second press counts for what was looked at again, not for what was changed after.
    accepts = sent.get("accept") == "yes" and sent.get("looked_at") == mark
    kept = house().keep_inspection(me().shop_id, entered.text, me().name, accepts_doubtful=accepts, is_by_hand=True)
    if kept.outcome == "rejected":
        return _page(form, sent, entered.say(kept.faults), status=422)
    if kept.outcome == "doubtful":
        return _page(form, sent, entered.say(kept.doubts), status=409, looked_at=mark)
    if sent.get("stay") == "close":
        _close(kept.vehicle_id, entered.line.get("visit"))
    return redirect(url_for("technician.result", inspection_id=kept.inspection_id), 303)


def _close(vehicle_id: int, visit: str | None) -> None:
    seen = look_at_form(house().store, me().shop_id, vehicle_id, house().now())
    if seen and seen.car and seen.car.visit_id is not None and seen.car.visit == visit:
        close_visit(house().store, me().shop_id, seen.car.visit_id, None, me().name, house().now())


def _fill_visit(sent: Any) -> None:
    """An open visit has a name, ours where the shop gave none."""
    if sent.get("stay") in ("open", "close") and not str(sent.get("visit", "")).strip():
        sent["visit"] = f"visit {sent.get('inspection', '')}"


def _beginning(form: _Form) -> dict[str, str]:
    """What stands in the form before anything was typed."""
    picture, car = form.picture, form.picture.car
    given = {
        "inspection": f"F-{secrets.token_hex(4)}",
        "inspected_at": picture.now.isoformat(timespec="minutes"),
        "unit": picture.unit,
        **_units_of_last(form),
        "stay": "open" if form.part == "reception" else "day",
        "customer": picture.people[0].code if picture.people else "",
    }
    if car is None:
        return given
    vehicle = {"class" if name == "vehicle_class" else name: value for name, value in vars(car.vehicle).items()}
    for name in (*VEHICLE_WORDS, *VEHICLE_YES_NO):
        given[f"vehicle.{name}"] = choices.typed(vehicle[name])
    if car.visit:
        given |= {"visit": car.visit, "stay": "open"}
    if car.inspection and form.part == car.open_part:
        given["inspection"] = car.inspection
    return given


def _units_of_last(form: _Form) -> dict[str, str]:
    """The units in which the car was last measured."""
    found: dict[str, str] = {}
    for row in (row for part in form.parts for row in part.rows):
        reading, _ = (form.picture.last or {}).get((row.item.code, row.position), (None, None))
        for entry in row.entries:
            if entry.family.startswith("units.") and reading and reading.unit in entry.units:
                found[entry.family] = reading.unit
    return found


def _odometer_was(picture: FormPicture) -> str:
    """The last odometer in the unit that the form begins with."""
    if picture.last_odometer is None:
        return ""
    miles, on = picture.last_odometer
    shown = miles / MILES_PER_KM if picture.unit == "km" else miles
    return f"{words.number(round(shown))} {picture.unit} on {on}"


def _known(form: _Form) -> dict[str, Any]:
    """What was typed into fields of ours."""
    names = names_of(form.parts)
    return {name: value for name, value in forms.shown_again(request.form).items() if name in names}


def _page(
    form: _Form, given: Given, wrong: dict[str, str], *, status: int = 200, looked_at: str = ""
) -> ResponseReturnValue:
    picture, parts = form.picture, form.parts
    car = picture.car
    name = (car.vehicle.label or car.vehicle.code) if car else "a new car"
    page = render_template(
        "technician/inspect.html",
        title=f"Inspect {name}",
        action=form.action,
        car=car,
        persons=picture.people,
        given=given,
        wrong=wrong,
        looked_at=looked_at,
        is_doubtful=bool(looked_at),
        only_part=form.part,
        sheet_parts=parts,
        places=PLACES,
        families=[(key, [(one, one) for one in units], what) for key, (units, what) in families(parts).items()],
        odometer_was=_odometer_was(picture),
        rotation_of_car=rotation_words(car.vehicle) if car else "",
        asks_phone=me().role != "technician",
        vehicle_fields=[f"vehicle.{one}" for one in (*VEHICLE_WORDS, *VEHICLE_YES_NO)],
        rows_of=lambda kind: range(_rows(kind, given)),
        is_used=lambda kind, number: any(name.startswith(f"{kind}.{number}.") and given[name] for name in given),
        **choices.for_page(parts, catalogue_of(picture.shop)),
    )
    return page, status


def _rows(kind: str, given: Given) -> int:
    """How many rows for work or advice the page has: always two more than are filled."""
    filled = [number for number in range(MOST_ROWS) if given.get(f"{kind}.{number}.item")]
    return min(max(ROWS_SHOWN, max(filled, default=0) + 3), MOST_ROWS)
