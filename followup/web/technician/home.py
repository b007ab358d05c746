"""Where the day on the shop floor begins: find a car, see which are here."""

from __future__ import annotations

from flask import render_template, request
from flask.typing import ResponseReturnValue

from followup.web.house import house
from followup.web.login import me
from followup.web.security import for_roles
from followup.web.technician.blueprint import blueprint
from followup.web.technician.drafts import drafts_here, for_lists
from followup.workflows.look_at_inspection_form import cars_in_shop, find_cars


@blueprint.get("/")
@for_roles("technician", "advisor", "manager", "owner")
def home() -> ResponseReturnValue:
    """The cars that are in the shop, a search, the forms to fill, and those that are half filled."""
    words = request.args.get("q", "").strip()[:120]
    found = find_cars(house().store, me().shop_id, words) if words else []
    here = cars_in_shop(house().store, me().shop_id)
    half = drafts_here()
    return render_template("technician/home.html", words=words, found=found, here=here, drafts=half, **for_lists())
