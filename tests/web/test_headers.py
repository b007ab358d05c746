"""Security headers on every answer. What they must say: OWASP ASVS 5.0, 3.3, 3.4 and 14.3.2."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from flask import Flask
from flask.testing import FlaskClient
from werkzeug.test import TestResponse

from followup.web.app import MAX_BODY_BYTES, InsecureAddress, create_app
from followup.web.security import public
from tests.web.conftest import token_on
from tests.web.house import PASSWORD, build, settings
from tests.web.url_map import routes


def check_headers(response: TestResponse, is_static: bool = False) -> None:
    """What each answer must carry."""
    policy = dict(part.split(" ", 1) for part in response.headers["Content-Security-Policy"].split("; "))
    assert policy["default-src"] == "'none'"
    assert policy["object-src"] == policy["base-uri"] == policy["frame-ancestors"] == "'none'"
    assert policy["form-action"] == "'self'"
    assert "unsafe" not in response.headers["Content-Security-Policy"]
    assert "*" not in response.headers["Content-Security-Policy"]
    assert response.headers["X-Content-Type-Options"] == "nosniff"
    assert response.headers["Referrer-Policy"] in ("same-origin", "no-referrer", "strict-origin-when-cross-origin")
    if response.headers.get("Content-Type", "").startswith("text/"):
        assert "charset=utf-8" in response.headers["Content-Type"].lower()
    if not is_static:
        assert response.headers["Cache-Control"] == "no-store"


@pytest.mark.parametrize("role", ["", "technician", "owner"])
def test_every_route_has_them(app: Flask, signed_in: Callable[[str], FlaskClient], role: str) -> None:
    walked = 0
    client = signed_in(role) if role else app.test_client()
    for route in routes(app):
        response = client.open(route.address, method=route.method)
        check_headers(response, is_static=route.endpoint == "static")
        walked += 1
    assert walked >= 10


def test_errors_have_them_and_say_what_to_do(app: Flask) -> None:
    @app.get("/breaks")
    @public
    def breaks() -> str:
        raise RuntimeError("a secret of the program")

    app.add_url_rule("/undeclared", view_func=lambda: "never seen")
    client = app.test_client()
    large = b"x" * (MAX_BODY_BYTES + 1)
    for status, response in (
        (400, client.post("/sign-in", data={"login": "owner"})),
        (403, client.get("/undeclared")),
        (404, client.get("/there-is-nothing")),
        (405, client.post("/account")),
        (413, client.post("/sign-in", data=large, content_type="application/x-www-form-urlencoded")),
        (500, client.get("/breaks")),
    ):
        assert response.status_code == status
        check_headers(response)
        assert "<h1>" in response.text
        assert "secret" not in response.text
        assert "Traceback" not in response.text
    assert "GET" in client.post("/account").headers["Allow"]


def test_a_head_and_an_options_request_have_them(app: Flask) -> None:
    check_headers(app.test_client().head("/sign-in"))
    assert "Content-Security-Policy" in app.test_client().options("/sign-in").headers


def test_over_tls_the_cookie_belongs_to_this_host_alone(tmp_path: Path) -> None:
    house = build(f"sqlite+pysqlite:///{tmp_path / 'tls.db'}")
    house.settings = settings("https://texts.example.com")
    client = create_app(house).test_client()
    base = "https://texts.example.com"
    page = client.get("/sign-in", base_url=base)
    # ASVS 3.4.1: at least a year.
    assert "max-age=31536000" in page.headers["Strict-Transport-Security"]
    cookie = page.headers["Set-Cookie"]
    # RFC 6265bis: a `__Host-` cookie must be Secure, with Path=/ and no Domain.
    assert cookie.startswith("__Host-")
    parts = {part.strip().lower() for part in cookie.split(";")[1:]}
    assert {"secure", "httponly", "path=/", "samesite=lax"} <= parts
    assert not any(part.startswith("domain") for part in parts)


def test_signing_in_works_over_tls(tmp_path: Path) -> None:
    house = build(f"sqlite+pysqlite:///{tmp_path / 'tls.db'}")
    house.settings = settings("https://texts.example.com")
    client = create_app(house).test_client()
    base, referrer = "https://texts.example.com", {"Referer": "https://texts.example.com/sign-in"}
    page = client.get("/sign-in", base_url=base).text
    token = page.split('name="csrf_token" value="')[1].split('"')[0]
    form = {"login": "owner", "password": PASSWORD, "csrf_token": token}
    assert client.post("/sign-in", data=form, base_url=base, headers=referrer).status_code == 303
    elsewhere = client.post("/sign-in", data=form, base_url=base, headers={"Referer": "https://other.example.com/"})
    assert elsewhere.status_code == 400


def test_plain_http_is_for_this_machine_alone(tmp_path: Path) -> None:
    house = build(f"sqlite+pysqlite:///{tmp_path / 'plain.db'}")
    house.settings = settings("http://texts.example.com")
    with pytest.raises(InsecureAddress):
        create_app(house)


def test_forwarded_headers_change_nothing_without_a_proxy_of_ours(app: Flask) -> None:
    spoofed = {"X-Forwarded-Host": "evil.example", "X-Forwarded-Proto": "https", "X-Forwarded-For": "203.0.113.9"}
    answer = app.test_client().get("/", headers=spoofed)
    assert "evil.example" not in answer.headers["Location"]
    assert "evil.example" not in app.test_client().get("/sign-in", headers=spoofed).text


def test_the_address_that_was_asked_for_never_leads_to_another_site(app: Flask) -> None:
    for wanted in (
        "//evil.example",
        "https://evil.example",
        "/\\evil.example",
        "\\\\evil.example",
        "/\tx",
        "javascript:1",
    ):
        client = app.test_client()
        form = {"login": "owner", "password": PASSWORD, "csrf_token": token_on(client, "/sign-in"), "next": wanted}
        assert client.post("/sign-in", data=form).headers.get("Location", "/") == "/"
