"""Deleting a customer: what goes, what stays and what stands is shown, and only then it is done."""

from __future__ import annotations

from flask import render_template
from flask.typing import ResponseReturnValue

from followup.web import forms
from followup.web.house import house
from followup.web.login import me
from followup.web.owner.blueprint import blueprint
from followup.web.security import for_roles
from followup.web.steps import go, or_404, read_or_400
from followup.workflows.delete_customer import delete_customer, look_at_deletion

CHANGED = "Something else stands by now. Nothing was deleted: look at it again."
IN_FLIGHT = "A text to them is just being handed over. Nothing was deleted: press again in a minute."


class Deletion(forms.Form):
    """What stood when the owner looked."""

    mark: forms.Words = ""


@blueprint.get("/customers/<int:person_id>/delete")
@for_roles("owner")
def ask_to_delete(person_id: int) -> ResponseReturnValue:
    """Ask once more, with everything that stands."""
    return _page(person_id)


@blueprint.post("/customers/<int:person_id>/delete")
@for_roles("owner")
def delete(person_id: int) -> ResponseReturnValue:
    """Delete them."""
    form = read_or_400(Deletion)
    done = delete_customer(
        house().store, me().shop_id, person_id, form.mark, me().name, house().now(), house().ledger_secret
    )
    if done in ("changed", "in_flight"):
        return _page(person_id, CHANGED if done == "changed" else IN_FLIGHT, 409)
    or_404(None if done == "nobody" else done)
    return go("Deleted. Their readings stay, without a person.", "advisor.find")


def _page(person_id: int, wrong: str = "", status: int = 200) -> ResponseReturnValue:
    seen = or_404(look_at_deletion(house().store, me().shop_id, person_id, house().now()))
    return render_template("owner/delete_customer.html", seen=seen, wrong={"": wrong} if wrong else {}), status
