"""The phone list and the search: whom to call, one line each, and where to find anybody."""

from __future__ import annotations

from flask import render_template, request
from flask.typing import ResponseReturnValue

from followup.web.advisor.blueprint import blueprint
from followup.web.house import house
from followup.web.login import me
from followup.web.security import for_roles
from followup.web.steps import ADVISORS
from followup.workflows import find_customers, look_at_phone_list

LONGEST_SEARCH = 100


@blueprint.get("/calls")
@for_roles(*ADVISORS)
def calls() -> ResponseReturnValue:
    """Whom to call and why."""
    found = look_at_phone_list.look_at_phone_list(house().store, me().shop_id)
    return render_template("advisor/calls.html", found=found)


@blueprint.get("/find")
@for_roles(*ADVISORS)
def find() -> ResponseReturnValue:
    """Customers and cars by name, plate, number or what the car is called; all of them where nothing is asked."""
    asked = request.args.get("q", "").strip()[:LONGEST_SEARCH]
    found = find_customers.find_customers(house().store, me().shop_id, asked, house().now())
    return render_template("advisor/find.html", asked=asked, found=found, most=find_customers.MOST)
