"""What came in and fits no shop of this machine."""

from __future__ import annotations

from flask import render_template
from flask.typing import ResponseReturnValue

from followup.web.house import house
from followup.web.login import me
from followup.web.owner.blueprint import blueprint
from followup.web.security import for_roles
from followup.web.steps import Nothing, go, read_or_400
from followup.workflows.look_at_letters import look_at_letters, put_letter_away


@blueprint.get("/letters")
@for_roles("owner")
def letters() -> ResponseReturnValue:
    """All that nobody looked at yet."""
    return render_template("owner/letters.html", seen=look_at_letters(house().store))


@blueprint.post("/letters/<int:letter_id>/put-away")
@for_roles("owner")
def put_away(letter_id: int) -> ResponseReturnValue:
    """Somebody looked at it."""
    read_or_400(Nothing)
    done = put_letter_away(house().store, me().shop_id, letter_id, me().name, house().now())
    return go("Put away." if done else "Somebody put it away before.", "owner.letters")
