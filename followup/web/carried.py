"""A form that was sent after its sender's session had run out is carried over the sign-in: nothing typed is lost.

The sign-in page holds what was sent, sealed: it comes back with the password, and the form's own folder goes on with
it. Only what came with the session's own form token is taken up, so that no other site can hand us a form.
"""

from __future__ import annotations

import base64
import binascii
import hashlib
import hmac
import json
from collections.abc import Callable, Mapping
from typing import Any, TypeVar

from flask import current_app, request
from flask.typing import ResponseReturnValue
from flask_wtf.csrf import CSRFError  # type: ignore[import-untyped]  # it has no types

from followup.web.security import CSRF_FIELD, csrf

View = TypeVar("View", bound=Callable[..., Any])
# Gets the variable parts of the address, its query and the fields; answers as the page would. None: it is of no use.
GoOn = Callable[[Mapping[str, Any], Mapping[str, str], Mapping[str, str]], ResponseReturnValue | None]


def carried_over(go_on: GoOn) -> Callable[[View], View]:
    """A form posted to this view outlives its sender's session; whoever signs in then goes on by `go_on`."""

    def decorate(view: View) -> View:
        view.go_on = go_on  # type: ignore[attr-defined]  # functions take attributes; mypy does not know this one
        return view

    return decorate


def seal() -> str:
    """What was just sent by somebody who is not signed in, for the sign-in page; "" where it is not carried."""
    view = current_app.view_functions.get(request.endpoint or "")
    if request.method != "POST" or not hasattr(view, "go_on"):
        return ""
    try:
        csrf.protect()
    except CSRFError:
        return ""
    fields = {name: value for name, value in request.form.items() if name != CSRF_FIELD}
    told = [request.endpoint, request.view_args or {}, request.args.to_dict(), fields]
    body = json.dumps(told, ensure_ascii=False).encode()
    return f"{base64.urlsafe_b64encode(body).decode()}.{_mark(body)}"


def go_on(sealed: str) -> ResponseReturnValue | None:
    """Go on with what `seal` gave, as the one who is signed in now; None where it is none of ours or of no use."""
    encoded, _, mark = sealed.partition(".")
    try:
        body = base64.urlsafe_b64decode(encoded.encode())
    except (binascii.Error, ValueError):
        return None
    if not encoded or not hmac.compare_digest(mark.encode(), _mark(body).encode()):
        return None
    endpoint, variables, query, fields = json.loads(body)
    found: GoOn | None = getattr(current_app.view_functions.get(endpoint), "go_on", None)
    return found(variables, query, fields) if found else None


def _mark(body: bytes) -> str:
    key = hashlib.sha256(b"carried over a sign-in:" + str(current_app.config["SECRET_KEY"]).encode()).digest()
    return hmac.new(key, body, hashlib.sha256).hexdigest()
