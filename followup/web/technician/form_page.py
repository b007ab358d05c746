"""The inspection form as a page: what stands in it before anything was typed, and how it is shown."""

from __future__ import annotations

import secrets
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from flask import abort, render_template, url_for
from flask.typing import ResponseReturnValue

from followup.core.day_words import day_words
from followup.core.item import MILES_PER_KM
from followup.core.items import catalogue_of
from followup.core.rotation import rotation_words
from followup.core.vehicle import Vehicle
from followup.web import forms, words
from followup.web.house import house
from followup.web.login import me
from followup.web.sheet import PARTS, PLACES, Part, families, sheet
from followup.web.technician import choices
from followup.web.technician.entered import MOST_ROWS, ROWS_SHOWN, VEHICLE_WORDS, VEHICLE_YES_NO, names_of
from followup.workflows.look_at_inspection_form import FormPicture, look_at_form
from followup.workflows.sign_in import Role

Given = Mapping[str, Any]
EVERYBODY: tuple[Role, ...] = ("technician", "advisor", "manager", "owner")
NOT_YET = "Nothing was filled in yet."


@dataclass(frozen=True)
class InspectionForm:
    """One form as it stands: the car's picture, the part or both."""

    picture: FormPicture
    part: str | None

    @property
    def parts(self) -> tuple[Part, ...]:
        """The sheet of the car; a new car's shows everything."""
        vehicle = self.picture.car.vehicle if self.picture.car else Vehicle("")
        return sheet(vehicle, self.part, self.picture.last, catalogue_of(self.picture.shop))

    @property
    def vehicle_id(self) -> int | None:
        """The car; None for one that was never here."""
        return self.picture.car.vehicle_id if self.picture.car else None

    @property
    def name(self) -> str:
        """The car in words."""
        car = self.picture.car
        return (car.vehicle.label or car.vehicle.code) if car else "a new car"

    def address(self, **query: Any) -> str:
        """Where the form is shown and sent."""
        return self._address("technician.inspect", query)

    def drafts_address(self, **query: Any) -> str:
        """Where it is sent as far as it is filled."""
        return self._address("technician.keep_draft", query)

    def _address(self, endpoint: str, query: Mapping[str, Any]) -> str:
        if self.vehicle_id is None:
            return url_for(f"{endpoint}_new", part=self.part, **query)
        return url_for(endpoint, vehicle_id=self.vehicle_id, part=self.part, **query)


def part_asked(query: Mapping[str, str]) -> str | None:
    """The part that an address names."""
    part = query.get("part")
    return part if part in PARTS else None


def open_form(vehicle_id: int | None, part: str | None) -> InspectionForm:
    """The form of a car, or of none yet; 404 where the shop has no such car."""
    picture = look_at_form(house().store, me().shop_id, vehicle_id, house().now())
    if picture is None:
        abort(404)
    return InspectionForm(picture, part)


def new_page() -> str:
    """A name for a page on which a form is filled, so that it is known by which one a draft was kept."""
    return secrets.token_hex(8)


def beginning(form: InspectionForm) -> dict[str, str]:
    """What stands in the form before anything was typed."""
    picture, car = form.picture, form.picture.car
    given = {
        "inspection": f"F-{secrets.token_hex(4)}",
        "inspected_at": picture.now.isoformat(timespec="minutes"),
        "unit": picture.unit,
        **_units_of_last(form),
        "stay": "open" if form.part == "reception" else "day",
        "customer": picture.people[0].code if picture.people else "",
        "page": new_page(),
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


def _units_of_last(form: InspectionForm) -> dict[str, str]:
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
    return f"{words.number(round(shown))} {picture.unit} on {day_words(on)}"


def known(form: InspectionForm, sent: Any) -> dict[str, Any]:
    """What was typed into fields of ours."""
    names = names_of(form.parts)
    return {name: value for name, value in forms.shown_again(sent).items() if name in names}


def when(at: datetime, now: datetime) -> str:
    """`at 2:05 pm`, with the day where it is not today's; both are wall times at the shop."""
    day = "" if at.date() == now.date() else f"on {words.MONTHS[at.month - 1]} {at.day} "
    return f"{day}at {words.clock_time(at)}"


def show_form(
    form: InspectionForm,
    given: Given,
    wrong: dict[str, str],
    *,
    status: int = 200,
    looked_at: str = "",
    sign: str = NOT_YET,
    arrived: str | None = None,
) -> ResponseReturnValue:
    """The form with what stands in it; `sign` says how much of it is kept. `arrived` tells the page's script of a form
    that was sent whether all of it is kept ("yes") or none of it ("no")."""
    picture, parts = form.picture, form.parts
    page = render_template(
        "technician/inspect.html",
        title=f"Inspect {form.name}",
        action=form.address(),
        so_far=form.drafts_address,
        sign=sign,
        arrived=arrived,
        car=picture.car,
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
        rotation_of_car=rotation_words(picture.car.vehicle) if picture.car else "",
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
