"""Whether this database is the shop: a copy sends nothing until the owner says that it is the shop now."""

from __future__ import annotations

from flask import render_template
from flask.typing import ResponseReturnValue

from followup.web.house import house
from followup.web.login import me
from followup.web.owner.blueprint import blueprint
from followup.web.security import for_roles
from followup.web.steps import go
from followup.workflows.take_over import WhereItIs, take_over, where_it_is


def is_elsewhere() -> bool:
    """True where nothing leaves from this database: then the owner sees it at the top of each page."""
    return bool(_where().says)


@blueprint.get("/here")
@for_roles("owner")
def here() -> ResponseReturnValue:
    """How it stands, and the press that lets a copy send."""
    return render_template("owner/here.html", where=_where())


@blueprint.post("/here")
@for_roles("owner")
def say_here() -> ResponseReturnValue:
    """This is the shop now."""
    held = take_over(house().store, me().name, house().now())
    if held is None:
        return go("It was the shop already.", "owner.here")
    waits = f" {held} texts may have gone out before: an advisor decides on them." if held else ""
    return go(f"This is the shop now: texts leave from here.{waits}", "owner.here")


def _where() -> WhereItIs:
    return where_it_is(house().store)
