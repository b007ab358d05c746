"""Makes the web application: one list of people's pages, one guard, one set of headers."""

from __future__ import annotations

from types import ModuleType
from urllib.parse import urlsplit

from flask import Blueprint, Flask
from flask.typing import ResponseReturnValue
from jinja2 import StrictUndefined
from werkzeug.middleware.proxy_fix import ProxyFix

from followup.web import errors, health, login, navigation, security, words
from followup.web.advisor import pages as advisor
from followup.web.api import pages as api
from followup.web.calendars import pages as calendars
from followup.web.house import House
from followup.web.manager import pages as manager
from followup.web.owner import pages as owner
from followup.web.phone import pages as phone
from followup.web.technician import pages as technician
from followup.web.webhook import pages as webhook

PEOPLE: tuple[ModuleType, ...] = (technician, advisor, manager, owner, phone, webhook, api, calendars)
# Guarded by a signature or a token in place of a session and its form token.
WITHOUT_FORMS: tuple[Blueprint, ...] = (webhook.blueprint, api.blueprint)
MAX_BODY_BYTES = 2 * 1024 * 1024
LOOPBACK = ("127.0.0.1", "localhost", "::1")


class InsecureAddress(ValueError):
    """The public address must begin with https://, unless it is on this machine (http://127.0.0.1:...)."""


def create_app(house: House) -> Flask:
    """The web application of a house; every part that it needs comes from there."""
    app = Flask(__name__)
    app.extensions["followup_house"] = house
    _configure(app, house)
    app.jinja_env.undefined = StrictUndefined
    app.jinja_env.trim_blocks = app.jinja_env.lstrip_blocks = True
    app.before_request(_guard)
    app.after_request(security.add_headers)
    security.csrf.init_app(app)
    login.manager.init_app(app)
    for blueprint in WITHOUT_FORMS:
        security.csrf.exempt(blueprint)
    app.register_blueprint(login.blueprint)
    app.register_blueprint(health.blueprint)
    for person in PEOPLE:
        app.register_blueprint(person.blueprint)
    navigation.add_to(app, PEOPLE)
    words.add_to(app)
    errors.add_to(app)
    return app


def _guard() -> ResponseReturnValue | None:
    """The guard's answer, but that a long form is not lost to a session that ran out."""
    refused = security.guard()
    is_asked_to_sign_in = getattr(refused, "status_code", None) == 303
    return (login.ask_again() if is_asked_to_sign_in else None) or refused


def _configure(app: Flask, house: House) -> None:
    address = urlsplit(house.settings.public_base_url)
    is_https = address.scheme == "https"
    if not is_https and address.hostname not in LOOPBACK:
        raise InsecureAddress
    app.config.update(
        SECRET_KEY=house.settings.secret("secret_key"),
        SESSION_COOKIE_NAME="__Host-followup" if is_https else "followup",
        SESSION_COOKIE_SECURE=is_https,
        SESSION_COOKIE_HTTPONLY=True,
        SESSION_COOKIE_SAMESITE="Lax",
        SESSION_COOKIE_PATH="/",
        MAX_CONTENT_LENGTH=MAX_BODY_BYTES,
        MAX_FORM_MEMORY_SIZE=MAX_BODY_BYTES,
        MAX_FORM_PARTS=2_000,
        # A form left open over lunch must still be accepted; the session's end is the limit.
        WTF_CSRF_TIME_LIMIT=None,
        SEND_FILE_MAX_AGE_DEFAULT=3600,
    )
    if house.settings.trusted_proxies:
        count = house.settings.trusted_proxies
        # Flask documents wrapping by assignment.
        app.wsgi_app = ProxyFix(app.wsgi_app, x_for=count, x_proto=count, x_host=count)  # type: ignore[method-assign]
