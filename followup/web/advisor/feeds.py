"""Calendar addresses: an advisor's calendar program reads the bookings there. Made and told once, listed, withdrawn."""

from __future__ import annotations

from typing import Literal

from flask import abort, render_template, request
from flask.typing import ResponseReturnValue

from followup.web import forms
from followup.web.advisor.blueprint import blueprint
from followup.web.house import house
from followup.web.login import me
from followup.web.security import for_roles
from followup.web.steps import ADVISORS, Nothing, go, read_or_400
from followup.workflows import keep_feeds


class FeedForm(forms.Form):
    """Whose bookings, and where they will be read."""

    name: forms.NeededWords
    whose: Literal["shop", "own"]


@blueprint.get("/calendar")
@for_roles(*ADVISORS)
def feeds() -> ResponseReturnValue:
    """Every address, and the form for one more."""
    return _page({"whose": "shop"}, {})


@blueprint.post("/calendar")
@for_roles(*ADVISORS)
def make_feed() -> ResponseReturnValue:
    """Make an address; it is shown on this one page and never again."""
    form, wrong = forms.read(FeedForm, request.form)
    if form is None:
        return _page(forms.shown_again(request.form), wrong, 422)
    try:
        token = keep_feeds.new_feed(
            house().store, me().shop_id, form.name, is_own=form.whose == "own", staff_id=me().staff_id,
            now=house().now(),
        )  # fmt: skip
    except keep_feeds.FeedNameUnusable as unusable:
        return _page(forms.shown_again(request.form), {"name": str(unusable)}, 422)
    made = f"{house().settings.public_base_url}/calendar/{token}.ics"
    return _page({"whose": "shop"}, {}, made=made, name=form.name)


@blueprint.get("/calendar/<int:feed_id>/withdraw")
@for_roles(*ADVISORS)
def ask_to_withdraw(feed_id: int) -> ResponseReturnValue:
    """Ask once more before an address ends."""
    found = next((one for one in _feeds() if one.id == feed_id and one.may_withdraw), None)
    if found is None:
        abort(404)
    return render_template("advisor/withdraw_feed.html", feed=found)


@blueprint.post("/calendar/<int:feed_id>/withdraw")
@for_roles(*ADVISORS)
def withdraw(feed_id: int) -> ResponseReturnValue:
    """End an address at once."""
    read_or_400(Nothing)
    done = keep_feeds.withdraw_feed(house().store, me().shop_id, feed_id, me().staff_id, house().now())
    said = "Withdrawn: nothing is read there any more." if done else "That address had ended, or is not yours to end."
    return go(said, "advisor.feeds")


def _feeds() -> list[keep_feeds.Feed]:
    return keep_feeds.feeds_of(house().store, me().shop_id, me().staff_id)


def _page(
    given: dict[str, str], wrong: dict[str, str], status: int = 200, made: str = "", name: str = ""
) -> ResponseReturnValue:
    page = render_template("advisor/feeds.html", feeds=_feeds(), given=given, wrong=wrong, made=made, name=name)
    return page, status
