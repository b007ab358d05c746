"""Where this person's day begins."""

from __future__ import annotations

from flask import render_template
from flask.typing import ResponseReturnValue

from followup.web.advisor.blueprint import blueprint
from followup.web.security import for_roles


@blueprint.get("/")
@for_roles("advisor", "manager", "owner")
def home() -> ResponseReturnValue:
    """What needs an answer, and what comes today."""
    return render_template("advisor/home.html")
