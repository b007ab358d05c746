"""Two files of iCalendar that need no sign-in, because their addresses are secrets: the bookings, and one visit.

A wrong address says no more than that there is nothing; who tries many is not looked at for a while. A calendar that
asks again with the tag of what it has is told that nothing changed.
"""

from __future__ import annotations

import hashlib

from flask import Response, abort, current_app, make_response, request
from flask.blueprints import BlueprintSetupState
from werkzeug.exceptions import TooManyRequests

from followup.web.calendars.blueprint import blueprint
from followup.web.house import house
from followup.web.security import public
from followup.web.wrong_tries import WrongTries
from followup.workflows.look_at_calendar import look_at_feed, look_at_visit

# Nobody mistypes what is tapped or pasted; a calendar whose address was withdrawn asks a few times an hour.
MOST_WRONG, WITHIN_MINUTES = 30, 15
_TRIES = "followup_wrong_addresses"


@blueprint.record
def _count_from_nothing(state: BlueprintSetupState) -> None:
    state.app.extensions[_TRIES] = WrongTries(MOST_WRONG, WITHIN_MINUTES)


@blueprint.get("/calendar/<token>.ics")
@public
def feed(token: str) -> Response:
    """The bookings of the shop, or of one advisor's customers."""
    _check_tries()
    return _file(look_at_feed(house().store, token, house().settings.public_base_url, house().now()), "bookings")


@blueprint.get("/v/<code>.ics")
@public
def visit(code: str) -> Response:
    """A customer's visit, until its day is over."""
    _check_tries()
    return _file(look_at_visit(house().store, code, house().settings.public_base_url, house().now()), "visit")


def _tries() -> WrongTries:
    found: WrongTries = current_app.extensions[_TRIES]
    return found


def _check_tries() -> None:
    wait = _tries().wait(request.remote_addr or "", house().now())
    if wait:
        raise TooManyRequests(retry_after=wait)


def _file(body: bytes | None, name: str) -> Response:
    if body is None:
        _tries().count(request.remote_addr or "", house().now())
        abort(404)
    answer = make_response(body)
    answer.content_type = "text/calendar; charset=utf-8"
    answer.headers["Content-Disposition"] = f'inline; filename="{name}.ics"'
    # Asked for anew each time, but not fetched again where it is the same.
    answer.headers["Cache-Control"] = "private, no-cache"
    answer.set_etag(hashlib.sha256(body).hexdigest()[:32])
    answer.make_conditional(request)
    return answer
