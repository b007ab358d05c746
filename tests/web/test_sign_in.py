"""Signing in, sessions and their ends. Source of the demands: OWASP ASVS 5.0, 6.3 and 7.1 to 7.5."""

from __future__ import annotations

import re
import statistics
import threading
import time
from datetime import timedelta
from pathlib import Path

import pytest
from argon2 import PasswordHasher
from flask import Flask
from flask.testing import FlaskClient

from followup import passwords
from followup.storage import staff
from followup.web.app import create_app
from followup.workflows import keep_staff
from followup.workflows import sign_in as signing
from tests.web.conftest import token_on
from tests.web.house import PASSWORD, TestHouse, build
from tests.web.url_map import contents

HERE = "192.0.2.1"


def _try(house: TestHouse, password: str, login: str = "owner", address: str = HERE) -> signing.SignInAnswer:
    return signing.sign_in(house.store, house.now(), "", login, password, address)


def _token(house: TestHouse, login: str = "owner") -> str:
    answer = _try(house, PASSWORD, login)
    assert answer.token
    return answer.token


def _who(house: TestHouse, token: str) -> str | None:
    member = signing.who_is(house.store, house.now(), token)
    return member and member.login


def _member(house: TestHouse, login: str = "owner") -> signing.StaffMember:
    with house.store.read() as connection:
        found = staff.with_login(connection, 1, login)
    assert found
    return found[0]


def test_the_right_password_and_only_that(house: TestHouse) -> None:
    assert _who(house, _token(house)) == "owner"
    assert _try(house, PASSWORD, " OWNER ").token
    for login, password in (("owner", PASSWORD.upper()), ("nobody", PASSWORD), ("owner", ""), ("", "")):
        answer = _try(house, password, login)
        assert (answer.token, answer.why_not) == (None, signing.WRONG)


def test_five_failures_then_not_even_the_right_password_for_a_quarter_of_an_hour(house: TestHouse) -> None:
    for n in range(5):
        assert _try(house, "wrong", address=f"198.51.100.{n}").why_not == signing.WRONG
    assert _try(house, PASSWORD, address="198.51.100.9").has_to_wait
    house.instant += timedelta(minutes=14, seconds=59)
    assert _try(house, PASSWORD).has_to_wait
    house.instant += timedelta(seconds=2)
    assert _try(house, PASSWORD).token


def test_five_failures_from_one_address_whatever_the_names(house: TestHouse) -> None:
    for n in range(5):
        _try(house, "wrong", f"guess{n}")
    assert _try(house, PASSWORD).has_to_wait
    assert _try(house, PASSWORD, address="198.51.100.9").token


def test_a_name_that_does_not_exist_has_to_wait_just_the_same(house: TestHouse) -> None:
    told = {
        login: [_try(house, "wrong", login, f"198.51.100.{n}").why_not for n in range(7)]
        for login in ("owner", "nobody")
    }
    assert told["owner"] == told["nobody"]


def test_the_right_password_does_not_free_an_address_that_guesses_others(house: TestHouse) -> None:
    for n in range(4):
        _try(house, "wrong", f"guess{n}")
    assert _try(house, PASSWORD, "technician").token
    _try(house, "wrong", "guess5")
    assert _try(house, PASSWORD).has_to_wait


def test_a_hundred_tries_at_once_get_five_looks(house: TestHouse, monkeypatch: pytest.MonkeyPatch) -> None:
    looks = []
    monkeypatch.setattr(passwords, "is_right", lambda password, kept: looks.append(password) or False)
    threads = [threading.Thread(target=_try, args=(house, "wrong")) for _ in range(100)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert len(looks) == 5


def test_time_does_not_tell_whether_a_name_exists(house: TestHouse, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(signing, "TRIES", 10_000)
    _try(house, "wrong", "nobody")
    took: dict[str, list[float]] = {"owner": [], "nobody": []}
    for _ in range(15):
        for login, times in took.items():
            begun = time.process_time()
            _try(house, "wrong", login)
            times.append(time.process_time() - begun)
    hashed = []
    for _ in range(5):
        begun = time.process_time()
        passwords.hash_password("x")
        hashed.append(time.process_time() - begun)
    difference = abs(min(took["owner"]) - min(took["nobody"]))
    assert difference < 0.1 * statistics.median(hashed)


def test_each_sign_in_has_a_new_token_of_enough_bits_and_the_store_does_not_know_it(house: TestHouse) -> None:
    first, second = _token(house), _token(house)
    assert first != second
    # 7.2.3: at least 128 bits; url-safe base64 carries six a character.
    assert len(first) * 6 >= 128
    assert first not in repr(contents(house))


def test_a_session_ends_unused_and_ends_in_any_case(house: TestHouse) -> None:
    token = _token(house)
    house.instant += timedelta(hours=3, minutes=59)
    assert _who(house, token) == "owner"
    house.instant += timedelta(hours=4)
    assert _who(house, token) is None

    token = _token(house)
    for _ in range(13):
        house.instant += timedelta(hours=1)
        assert _who(house, token) == "owner"
    house.instant += timedelta(hours=1)
    assert _who(house, token) is None


def test_signing_out_ends_the_session_on_the_server(app: Flask, house: TestHouse) -> None:
    client = _client(app)
    cookie = client.get_cookie("followup")
    assert cookie
    client.post("/sign-out", data={"csrf_token": token_on(client, "/account")})
    assert client.get("/account").status_code == 303
    thief = app.test_client()
    thief.set_cookie("followup", cookie.value)
    assert thief.get("/account").status_code == 303


def test_a_cookie_from_before_signing_in_is_worth_nothing_afterwards(app: Flask) -> None:
    client = app.test_client()
    planted = token_on(client, "/sign-in")
    before = client.get_cookie("followup")
    assert before
    client.post("/sign-in", data={"login": "owner", "password": PASSWORD, "csrf_token": planted})
    thief = app.test_client()
    thief.set_cookie("followup", before.value)
    assert thief.get("/account").status_code == 303
    assert client.post("/account/sessions/end", data={"csrf_token": planted}).status_code == 400


def test_a_changed_cookie_is_no_session(app: Flask) -> None:
    client = _client(app)
    cookie = client.get_cookie("followup")
    assert cookie
    client.set_cookie("followup", cookie.value[:-2] + ("AA" if cookie.value[-2:] != "AA" else "BB"))
    assert client.get("/account").status_code == 303


def test_a_new_password_ends_every_session(app: Flask, house: TestHouse) -> None:
    here, elsewhere = _client(app), _client(app)
    form = {"old": PASSWORD, "new": "a quiet blue wrench", "csrf_token": token_on(here, "/account")}
    assert here.post("/account/password", data=form).headers["Location"] == "/sign-in"
    assert elsewhere.get("/account").status_code == 303
    assert here.get("/account").status_code == 303
    assert _try(house, PASSWORD).token is None
    assert _try(house, "a quiet blue wrench").token


def test_a_new_password_needs_the_old_one_and_must_be_good(app: Flask) -> None:
    client = _client(app)
    for old, new, words in (
        ("another password", "a quiet blue wrench", "not your present password"),
        (PASSWORD, "password1", "tried first"),
        (PASSWORD, "short", "at least 8"),
    ):
        form = {"old": old, "new": new, "csrf_token": token_on(client, "/account")}
        answer = client.post("/account/password", data=form)
        assert (answer.status_code, words in answer.text) == (422, True)
        assert old not in answer.text
        assert f'value="{new}"' not in answer.text
    assert client.get("/account").status_code == 200


def test_guessing_the_old_password_on_the_account_page_is_limited_too(house: TestHouse) -> None:
    member = _member(house)
    for _ in range(5):
        signing.change_password(house.store, house.now(), member, "wrong", "a quiet blue wrench", HERE)
    told = signing.change_password(house.store, house.now(), member, PASSWORD, "a quiet blue wrench", HERE)
    assert told == {"old": signing.TOO_MANY}


def test_closing_an_account_ends_its_sessions_at_once(house: TestHouse) -> None:
    token = _token(house, "technician")
    assert keep_staff.set_active(house.store, house.now(), 1, _member(house, "technician").id, False, "owner") is None
    assert _who(house, token) is None
    assert _try(house, PASSWORD, "technician").why_not == signing.WRONG


def test_a_weak_hash_is_made_anew_when_its_owner_signs_in(house: TestHouse) -> None:
    weak = PasswordHasher(time_cost=1, memory_cost=8_192, parallelism=1).hash(PASSWORD)
    with house.store.write() as connection:
        staff.set_hash(connection, _member(house).id, weak)
    assert _try(house, PASSWORD).token
    with house.store.read() as connection:
        found = staff.with_login(connection, 1, "owner")
    assert found
    assert found[1] is not None
    assert not passwords.needs_new_hash(found[1])


def test_the_page_answers_a_wrong_password_without_telling_what_was_wrong(app: Flask) -> None:
    client = app.test_client()
    pages = []
    for login in ("advisor", "nobody1"):
        form = {"login": login, "password": "another", "csrf_token": token_on(client, "/sign-in")}
        answer = client.post("/sign-in", data=form)
        assert answer.status_code == 422
        # The token of the answer holds the second in which it was made.
        pages.append(re.sub(r'(name="csrf_token" value=")[^"]+', r"\1TOKEN", answer.text.replace(login, "NAME")))
    assert pages[0] == pages[1]


def test_too_many_tries_is_429_on_the_page(app: Flask) -> None:
    client = app.test_client()
    for _ in range(6):
        form = {"login": "owner", "password": "wrong", "csrf_token": token_on(client, "/sign-in")}
        answer = client.post("/sign-in", data=form)
    assert answer.status_code == 429
    assert "quarter of an hour" in answer.text


def test_where_there_are_two_shops_the_same_name_is_two_people(tmp_path: Path) -> None:
    house = build(f"sqlite+pysqlite:///{tmp_path / 'two.db'}", ("elm", "oak"))
    assert 'name="shop"' in create_app(house).test_client().get("/sign-in").text
    answers = [
        signing.sign_in(house.store, house.now(), shop, "owner", PASSWORD, HERE) for shop in ("elm", "OAK ", "", "x")
    ]
    assert [answer.member and answer.member.shop_id for answer in answers] == [1, 2, None, None]


def test_an_owner_cannot_touch_the_staff_of_another_shop(tmp_path: Path) -> None:
    house = build(f"sqlite+pysqlite:///{tmp_path / 'two.db'}", ("elm", "oak"))
    client = create_app(house).test_client()
    form = {"shop": "elm", "login": "owner", "password": PASSWORD, "csrf_token": token_on(client, "/sign-in")}
    client.post("/sign-in", data=form)
    assert "of Oak" not in client.get("/owner/staff").text
    before = contents(house)
    for staff_id in range(5, 9):
        assert client.get(f"/owner/staff/{staff_id}/close").status_code == 404
        for verb in ("close", "open"):
            address, token = f"/owner/staff/{staff_id}/{verb}", {"csrf_token": token_on(client, "/account")}
            assert client.post(address, data=token).status_code == 404
    assert contents(house) == before


def test_adding_somebody_who_can_then_sign_in(app: Flask, house: TestHouse) -> None:
    client = _client(app)
    form = {"login": "Rosa.K", "name": "Rosa K.", "role": "advisor", "password": "three plain words"}
    answer = client.post("/owner/staff", data={**form, "csrf_token": token_on(client, "/owner/staff")})
    assert answer.status_code == 303
    assert _try(house, "three plain words", "rosa.k").token
    (trail,) = contents(house)["audit"]
    assert {"owner", "account made", "rosa.k"} <= set(trail[:7])
    assert "three plain words" not in repr(trail)
    again = client.post("/owner/staff", data={**form, "csrf_token": token_on(client, "/owner/staff")})
    assert again.status_code == 422
    assert "three plain words" not in again.text


@pytest.mark.parametrize(
    "changed",
    [{"role": "king"}, {"is_active": "no"}, {"shop_id": "2"}, {"login": "has space"}, {"name": ""}, {"name": "a\x1bb"}],
)
def test_adding_somebody_takes_no_other_fields_and_no_nonsense(
    app: Flask, house: TestHouse, changed: dict[str, str]
) -> None:
    client = _client(app)
    before = contents(house)
    form = {"login": "rosa", "name": "Rosa", "role": "advisor", "password": "three plain words"} | changed
    answer = client.post("/owner/staff", data={**form, "csrf_token": token_on(client, "/owner/staff")})
    assert answer.status_code == 422
    assert contents(house) == before


def test_the_last_owner_stays(house: TestHouse) -> None:
    assert keep_staff.set_active(house.store, house.now(), 1, _member(house).id, False, "owner")
    assert _try(house, PASSWORD).token


def _client(app: Flask, login: str = "owner") -> FlaskClient:
    client = app.test_client()
    form = {"login": login, "password": PASSWORD, "csrf_token": token_on(client, "/sign-in")}
    assert client.post("/sign-in", data=form).status_code == 303
    return client
