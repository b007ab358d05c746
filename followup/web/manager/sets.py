"""Season tires: begin a season in which sets are changed, see how far it is, pause it, end it."""

from __future__ import annotations

import re
from datetime import date
from typing import Any, Literal

from flask import abort, render_template, request
from flask.typing import ResponseReturnValue

from followup.web import forms
from followup.web.house import house
from followup.web.login import me
from followup.web.manager.blueprint import blueprint
from followup.web.security import for_roles
from followup.web.steps import MANAGERS, go
from followup.web.words import day
from followup.workflows import keep_set_season as keeping
from followup.workflows.look_at_sets import look_at_sets

_ISO_DAY = re.compile(r"\d{4}-\d{2}-\d{2}")
SETS = {"winter": "Winter tires", "summer": "Summer tires"}
DONE = {
    "pause": "Paused: nobody is invited until it goes on.",
    "go_on": "It goes on.",
    "end": "Ended: nobody more is invited to it.",
}


class Season(forms.Form):
    """The set that people change to, and the last day on which they are invited to."""

    to_set: Literal["winter", "summer"]
    until_on: forms.Day


@blueprint.get("/sets")
@for_roles(*MANAGERS)
def sets() -> ResponseReturnValue:
    """The season that is open, or the form to begin one."""
    return _page(None, {})


@blueprint.post("/sets")
@for_roles(*MANAGERS)
def begin_sets() -> ResponseReturnValue:
    """Begin a season."""
    form, wrong = forms.read(Season, request.form)
    if form is not None:
        because = keeping.begin_season(
            house().store, me().shop_id, form.to_set, form.until_on, me().staff_id, me().name, house().now()
        )
        if because is None:
            return go("Begun. The first customers are drawn within ten minutes.", "manager.sets")
        wrong = {"until_on": because}
    return _page(forms.shown_again(request.form), wrong, 422)


@blueprint.post("/sets/<int:season_id>/<step>")
@for_roles(*MANAGERS)
def change_sets(season_id: int, step: str) -> ResponseReturnValue:
    """Pause it, let it go on, end it."""
    known: dict[str, keeping.Step] = {"pause": "pause", "go_on": "go_on", "end": "end"}
    if step not in known:
        abort(404)
    if not keeping.change_season(house().store, me().shop_id, season_id, known[step], me().name, house().now()):
        abort(404)
    return go(DONE[step], "manager.sets")


def in_plain(says: str) -> str:
    """What stands against an invite, short: days as on pages, and without the line of the ledger."""
    return _ISO_DAY.sub(lambda found: day(date.fromisoformat(found[0])), says.partition("; given on")[0])


def _page(given: dict[str, Any] | None, wrong: dict[str, str], status: int = 200) -> ResponseReturnValue:
    needs = house().needs_registration
    seen = look_at_sets(house().store, me().shop_id, house().now(), needs_registration=needs)
    usual = {"to_set": seen.next_set, "until_on": seen.next_until.isoformat()}
    return render_template(
        "manager/sets.html", seen=seen, given=usual if given is None else given, wrong=wrong, sets=SETS, plain=in_plain
    ), status
