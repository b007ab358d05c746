"""Where this person's day begins."""

from __future__ import annotations

from flask import render_template
from flask.typing import ResponseReturnValue

from followup.web.security import for_roles
from followup.web.technician.blueprint import blueprint


@blueprint.get("/")
@for_roles("technician", "advisor", "manager", "owner")
def home() -> ResponseReturnValue:
    """The cars that are in the shop, and the forms to fill."""
    return render_template("technician/home.html")
