"""Who may open a page, and the headers of every answer.

Every view says who may use it, by exactly one of the three decorators below. A view that says nothing answers
nobody: `followup/web/app.py` refuses it, and a test walks the URL map.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, Literal, TypeVar

from flask import Flask, Response, abort, current_app, redirect, request, url_for
from flask.typing import ResponseReturnValue
from flask_login import current_user  # type: ignore[import-untyped]  # it has no types
from flask_wtf import CSRFProtect  # type: ignore[import-untyped]  # it has no types

from followup.workflows.sign_in import ROLES, Role

View = TypeVar("View", bound=Callable[..., Any])
Proof = Literal["signature", "token"]

csrf = CSRFProtect()
CSRF_FIELD = "csrf_token"

CONTENT_SECURITY_POLICY = "; ".join(
    (
        "default-src 'none'",
        "script-src 'self'",
        "style-src 'self'",
        "img-src 'self'",
        "connect-src 'self'",
        "form-action 'self'",
        "base-uri 'none'",
        "object-src 'none'",
        "frame-ancestors 'none'",
    )
)
HEADERS = {
    "Content-Security-Policy": CONTENT_SECURITY_POLICY,
    "X-Content-Type-Options": "nosniff",
    # Not `no-referrer`: the check of forms over TLS reads the page's own address.
    "Referrer-Policy": "same-origin",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Permissions-Policy": "camera=(), geolocation=(), microphone=()",
}
ONE_YEAR_S = 365 * 24 * 3600


def for_roles(*roles: Role) -> Callable[[View], View]:
    """Only these roles may use the view; `for_roles("advisor", "manager", "owner")`."""
    unknown = set(roles) - set(ROLES)
    if unknown or not roles:
        raise ValueError(f"no such role: {sorted(unknown)}")
    return _declare(frozenset(roles))


def for_everyone_signed_in(view: View) -> View:
    """Every member of staff may use the view."""
    return _declare(frozenset(ROLES))(view)


def public(view: View) -> View:
    """Anybody may use the view, signed in or not; forms on it still need their CSRF token."""
    return _declare("public")(view)


def proven_by(proof: Proof) -> Callable[[View], View]:
    """The view itself checks a signature or a token; for the blueprints `webhook` and `api` only."""
    return _declare(proof)


def _declare(who: frozenset[Role] | str) -> Callable[[View], View]:
    def decorate(view: View) -> View:
        view.may_use = who  # type: ignore[attr-defined]  # functions take attributes; mypy does not know this one
        return view

    return decorate


def who_may_use(app: Flask, endpoint: str) -> frozenset[Role] | str | None:
    """The roles, "public", "signature" or "token" that a view declares; None where it declares nothing."""
    if endpoint == "static" or endpoint.endswith(".static"):
        return "public"
    return getattr(app.view_functions.get(endpoint), "may_use", None)


def may_use(endpoint: str) -> bool:
    """Whether the one who asks may use this view: the pages show only links that lead somewhere."""
    declared = who_may_use(current_app, endpoint)
    if isinstance(declared, frozenset):
        return bool(current_user.is_authenticated and current_user.role in declared)
    return declared is not None


def guard() -> ResponseReturnValue | None:
    """Before each request: let in, send to the sign-in page, or refuse. What is not declared is refused.

    A script that asks for JSON is told so in place of being sent there.
    """
    if request.endpoint is None:
        return None
    declared = who_may_use(current_app, request.endpoint)
    if declared is None:
        abort(403)
    if isinstance(declared, str):
        return None
    if not current_user.is_authenticated:
        if wants_json():
            return {"why": "signed_out"}, 401
        wants = request.full_path.rstrip("?") if request.method == "GET" else None
        return redirect(url_for("login.sign_in", next=wants), 303)
    if current_user.role not in declared:
        abort(403)
    return None


def wants_json() -> bool:
    """Whether a script of ours asks, which reads JSON alone."""
    return request.headers.get("Accept") == "application/json"


def add_headers(response: Response) -> Response:
    """After each request, errors and static files too."""
    for name, value in HEADERS.items():
        response.headers[name] = value
    if is_https(current_app):
        response.headers["Strict-Transport-Security"] = f"max-age={ONE_YEAR_S}; includeSubDomains"
    # A calendar's file says itself that it is asked for anew each time.
    if request.endpoint != "static" and "Cache-Control" not in response.headers:
        response.headers["Cache-Control"] = "no-store"
    return response


def is_https(app: Flask) -> bool:
    """Whether people reach the pages by TLS; false only for a public address that is http on loopback."""
    return bool(app.config["SESSION_COOKIE_SECURE"])
