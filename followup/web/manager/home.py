"""Where this person's day begins."""

from __future__ import annotations

from flask import render_template
from flask.typing import ResponseReturnValue

from followup.web.manager.blueprint import blueprint
from followup.web.security import for_roles


@blueprint.get("/")
@for_roles("manager", "owner")
def home() -> ResponseReturnValue:
    """What the texts brought, and what waits."""
    return render_template("manager/home.html")
