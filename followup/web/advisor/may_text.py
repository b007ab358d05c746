"""May we text: for any number whether it may be texted now, which rule with which row decides, and when next."""

from __future__ import annotations

from typing import Literal

from flask import render_template, request
from flask.typing import ResponseReturnValue

from followup.phone_numbers import NotANumber, read_number
from followup.web import forms
from followup.web.advisor.blueprint import blueprint
from followup.web.house import house
from followup.web.login import me
from followup.web.security import for_roles
from followup.web.steps import ADVISORS, go, or_404, read_or_400
from followup.workflows import settle_number as settling
from followup.workflows.look_at_may_text import NumberSeen, look_at_may_text

COVERS = {"visits": "Visits", "upkeep": "Upkeep of the car", "offers": "Offers and free services"}
EVENTS = {
    "given": "agreed",
    "narrowed": "took a part back",
    "taken_back": "stopped all texts",
    "given_again": "texts on again",
}
# The rules by what people call them; a test holds them against `core/planning/number_rules.py`.
RULES = {
    "stopped_by_owner": "The owner's switch",
    "registration": "Registration with the carriers",
    "bad_number": "The line",
    "landline": "The line",
    "reassigned": "Reassigned number",
    "nobody": "Whose it is",
    "stop": "A stop",
    "confirm_stop": "A stop that is asked about",
    "deceased": "A death",
    "fleet": "Fleet",
    "paused": "A pause",
    "symptom": "A symptom",
    "complaint": "A complaint",
    "with_a_person": "A person writes",
    "no_consent": "Consent",
    "consent": "Consent",
    "asked_for": "Their own request",
    "answer": "An answer",
    "unread": "Unread text",
    "hours": "Hours",
    "tries": "Tries",
    "try_spacing": "Spacing",
    "spacing": "Spacing",
    "cap_30": "At most in 30 days",
    "cap_365": "At most in a year",
    "subject_24_hours": "At most in 24 hours",
}
REASSIGNED = {
    "yes": "yes: it may be somebody else's",
    "no": "no: the number is still theirs",
    "no_data": "nothing is known",
}


class Whose(forms.Form):
    """Whose a held number is."""

    whose: Literal["theirs", "not_theirs"]


class WhatLine(forms.Form):
    """What a line can do."""

    line: Literal["mobile", "landline", "fixed_voip"]


@blueprint.get("/may-text")
@for_roles(*ADVISORS)
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
    by_cover = [(COVERS[cover], answer) for cover, answer in seen.answers.items()] if seen else []
    page = render_template(
        "advisor/may_text.html", seen=seen, given={"number": asked}, wrong=wrong, covers=COVERS, events=EVENTS,
        asked=[*by_cover, ("An answer, if they write now", seen.to_them)] if seen else [], rules=RULES,
        reassigned=REASSIGNED, lines=tuple(settling.LINES.items()),
    )  # fmt: skip
    return page, 422 if wrong else 200


@blueprint.post("/numbers/<int:phone_id>/whose")
@for_roles(*ADVISORS)
def settle_number(phone_id: int) -> ResponseReturnValue:
    """A person looked whose a held number is."""
    form = read_or_400(Whose)
    or_404(
        settling.settle_held(
            house().store, me().shop_id, phone_id, form.whose == "theirs", me().staff_id, me().name, house().now(),
            house().ledger_secret,
        )
        or None
    )  # fmt: skip
    said = "It is theirs: texts may leave again." if form.whose == "theirs" else "No text leaves to it any more."
    return go(said, "advisor.thread", phone_id=phone_id)


@blueprint.post("/numbers/<int:phone_id>/line")
@for_roles(*ADVISORS)
def say_what_line(phone_id: int) -> ResponseReturnValue:
    """A person knows what the line can do."""
    form = read_or_400(WhatLine)
    done = settling.say_what_line(house().store, me().shop_id, phone_id, form.line, me().name, house().now())
    or_404(done or None)
    return go(f"Kept: the number {settling.LINES[form.line]}.", "advisor.thread", phone_id=phone_id)


def _look(number: str) -> NumberSeen:
    return look_at_may_text(
        house().store, me().shop_id, number, house().now(), needs_registration=house().needs_registration,
        secret=house().ledger_secret,
    )  # fmt: skip
