"""A fleet's weekly list: its contact's written word, the weekday, and a unit number for each car."""

from __future__ import annotations

from typing import Any

from flask import render_template, request
from flask.typing import ResponseReturnValue
from pydantic import create_model

from followup.web import forms
from followup.web.advisor.blueprint import blueprint
from followup.web.house import house
from followup.web.login import me
from followup.web.security import for_roles
from followup.web.steps import ADVISORS, Nothing, go, or_404, read_or_400
from followup.workflows import keep_fleet_list as keeping

DAYS = (
    ("0", "Monday"), ("1", "Tuesday"), ("2", "Wednesday"), ("3", "Thursday"), ("4", "Friday"), ("5", "Saturday"),
)  # fmt: skip
HOW = (("signed_paper", "On signed paper"), ("tablet", "On the tablet"), ("web_form", "On a web form"))


@blueprint.get("/persons/<int:person_id>/fleet")
@for_roles(*ADVISORS)
def fleet(person_id: int) -> ResponseReturnValue:
    """The list of a contact, or the form to begin one."""
    return _page(person_id, None, {})


@blueprint.post("/persons/<int:person_id>/fleet")
@for_roles(*ADVISORS)
def keep_fleet(person_id: int) -> ResponseReturnValue:
    """Keep the list."""
    seen = or_404(keeping.look_at_fleet(house().store, me().shop_id, person_id))
    fields: dict[str, Any] = {f"unit_{one.vehicle_id}": (forms.Words, "") for one in seen.cars}
    fields |= {"weekday": (forms.Whole, ...), "agreed_on": (forms.Day, ...), "how": (forms.NeededWords, ...)}
    form, wrong = forms.read(create_model("FleetForm", __base__=forms.Form, **fields), request.form)
    if form is None:
        return _page(person_id, forms.shown_again(request.form), wrong, 422)
    got = form.model_dump()
    units = {one.vehicle_id: got[f"unit_{one.vehicle_id}"] for one in seen.cars}
    wrong = keeping.keep_fleet_list(
        house().store, me().shop_id, person_id, got["weekday"], got["agreed_on"], got["how"], units, me().staff_id,
        house().now(),
    )  # fmt: skip
    if wrong:
        return _page(person_id, forms.shown_again(request.form), wrong, 422)
    return go("Kept. The list leaves on its weekday.", "advisor.fleet", person_id=person_id)


@blueprint.post("/persons/<int:person_id>/fleet/end")
@for_roles(*ADVISORS)
def end_fleet(person_id: int) -> ResponseReturnValue:
    """End the list."""
    read_or_400(Nothing)
    or_404(keeping.look_at_fleet(house().store, me().shop_id, person_id))
    done = keeping.end_fleet_list(house().store, me().shop_id, person_id, me().staff_id, house().now())
    return go("The list is ended." if done else "No list stood.", "advisor.fleet", person_id=person_id)


def _page(
    person_id: int, given: dict[str, Any] | None, wrong: dict[str, str], status: int = 200
) -> ResponseReturnValue:
    seen = or_404(keeping.look_at_fleet(house().store, me().shop_id, person_id))
    if given is None:
        given = {f"unit_{one.vehicle_id}": one.unit for one in seen.cars}
        agreed = seen.agreed_on.isoformat() if seen.agreed_on else ""
        given |= {"weekday": str(seen.weekday or 0), "agreed_on": agreed, "how": seen.how or "signed_paper"}
    page = render_template("advisor/fleet.html", seen=seen, given=given, wrong=wrong, days=DAYS, how=HOW)
    return page, status
