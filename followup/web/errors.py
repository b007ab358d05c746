"""Error pages: what happened and what to do now, in plain words. They never show what went wrong inside."""

from __future__ import annotations

from flask import Flask, Response, jsonify, make_response, render_template, request
from flask_wtf.csrf import CSRFError  # type: ignore[import-untyped]  # it has no types
from werkzeug.exceptions import HTTPException, InternalServerError

from followup.wiring import DatabaseMoved

# Status: what happened, what to do.
WORDS: dict[int, tuple[str, str]] = {
    400: ("This cannot be read", "Go back, load the page again and send it once more."),
    403: ("This page is not yours", "Your account does not open it. Ask the owner of the shop if it should."),
    404: ("There is nothing here", "Look at the address, or begin again at the start page."),
    405: ("This does not work that way", "Go back and use the buttons of the page."),
    413: ("This is too large", "Send a smaller file, or less text."),
    415: ("This kind of file is not taken", "Look at the page for the kinds that are."),
    429: ("Too many at once", "Wait a few minutes, then try again."),
    500: ("Something broke on our side", "Nothing that you had saved is lost. Try again; if it stays, tell the owner."),
    503: ("Too busy at this moment", "Wait a minute, then try again."),
}
FORM_TOO_OLD = ("This form has become too old", "Nothing was saved. Load the page again, then send the form once more.")
MOVED = ("The shop has moved to another database", "Nothing was saved. Ask the owner for the new pages.")
FOR_PROGRAMS = ("webhook", "api")


def add_to(app: Flask) -> None:
    """Every error that has words gets its page."""
    for status in WORDS:
        app.register_error_handler(status, _page)
    app.register_error_handler(CSRFError, form_too_old)
    app.register_error_handler(DatabaseMoved, _moved)


def _page(error: Exception) -> Response:
    failed = error if isinstance(error, HTTPException) else InternalServerError()
    status = failed.code or 500
    response = _answer(status, *WORDS[status])
    # 405 says what would work; 429 and 503 may say how long to wait.
    response.headers.extend([(name, value) for name, value in failed.get_headers() if name in ("Allow", "Retry-After")])
    return response


def form_too_old(error: Exception) -> Response:
    """A form whose token is of another session."""
    return _answer(400, *FORM_TOO_OLD)


def _moved(error: Exception) -> Response:
    return _answer(503, *MOVED)


def _answer(status: int, happened: str, do: str) -> Response:
    if request.blueprint in FOR_PROGRAMS:
        answer = jsonify(error=happened, do=do)
    else:
        answer = make_response(render_template("error.html", status=status, happened=happened, do=do))
    answer.status_code = status
    return answer
