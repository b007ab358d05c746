"""May we text: for any number whether it may be texted now, which rule or line decides, and when next."""

from __future__ import annotations

from flask import render_template, request
from flask.typing import ResponseReturnValue

from followup.phone_numbers import NotANumber, read_number
from followup.web.house import house
from followup.web.login import me
from followup.web.manager.blueprint import blueprint
from followup.web.security import for_roles
from followup.web.steps import MANAGERS
from followup.workflows.look_at_may_text import NumberSeen, look_at_may_text

COVERS = {"visits": "Visits", "upkeep": "Upkeep of the car", "offers": "Offers and free services"}
EVENTS = {
    "given": "agreed",
    "narrowed": "took a part back",
    "taken_back": "stopped all texts",
    "given_again": "texts on again",
}


@blueprint.get("/may-text")
@for_roles(*MANAGERS)
def may_text() -> ResponseReturnValue:
    """Look a number up."""
    asked = request.args.get("number", "").strip()
    seen: NumberSeen | None = None
    wrong = {}
    if asked:
        try:
            seen = _look(read_number(asked).e164)
        except NotANumber:
            wrong = {"number": "This is no phone number that exists."}
    page = render_template(
        "manager/may_text.html", seen=seen, given={"number": asked}, wrong=wrong, covers=COVERS, events=EVENTS
    )
    return page, 422 if wrong else 200


def _look(number: str) -> NumberSeen:
    needs = house().needs_registration
    return look_at_may_text(house().store, me().shop_id, number, house().now(), needs_registration=needs)
