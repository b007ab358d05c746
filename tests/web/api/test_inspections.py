"""`POST /api/v1/inspections` and its description, against the inspection contract and RFC 6750 (bearer tokens)."""

from __future__ import annotations

import json
import re
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
from click.testing import CliRunner
from flask.testing import FlaskClient
from werkzeug.test import TestResponse

from followup.cli.token import token as token_command
from followup.core.inspection import InspectionLine
from followup.core.items import ALL, BY_CODE
from followup.storage import inspections, people, tokens, windows
from followup.web.api.openapi import EXAMPLE, description
from followup.web.app import create_app
from followup.wiring import House
from followup.workflows.keep_tokens import TokenNameUnusable, new_token, revoke_token, standing_token
from tests.core.lines import line_told
from tests.shop_of_tests import open_test_house

Opened = tuple[House, int]
Send = Callable[..., TestResponse]
NDJSON = "application/x-ndjson"


@pytest.fixture
def opened(sqlite_url: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Opened]:
    """The real house and its shop."""
    house, shop_id = open_test_house(sqlite_url, tmp_path, monkeypatch)
    yield house, shop_id
    house.close()


@pytest.fixture
def client(opened: Opened) -> FlaskClient:
    """A program that asks."""
    return create_app(opened[0]).test_client()


@pytest.fixture
def send(opened: Opened, client: FlaskClient) -> Send:
    """Posts a body with a token that stands."""
    made = new_token(opened[0].store, opened[1], "front desk", opened[0].now(), "test")

    def post(body: Any, kind: str = "application/json", query: str = "") -> TestResponse:
        data = body if isinstance(body, str | bytes) else json.dumps(body)
        headers = {"Authorization": f"Bearer {made}"}
        return client.post(f"/api/v1/inspections{query}", data=data, content_type=kind, headers=headers)

    return post


def told(response: TestResponse) -> dict[str, Any]:
    """What was answered."""
    assert response.is_json
    answer: dict[str, Any] = response.get_json()
    return answer


def test_new_is_201_and_the_same_again_200(opened: Opened, send: Send) -> None:
    first = send(EXAMPLE)
    assert (first.status_code, told(first)) == (201, {"outcome": "new", "faults": [], "doubts": []})
    second = send(json.dumps(EXAMPLE, indent=2))
    assert (second.status_code, told(second)["outcome"]) == (200, "unchanged")
    house, shop_id = opened
    with house.store.read() as connection:
        car = people.find_vehicle(connection, shop_id, "V-31")
        assert car is not None
        kept = inspections.bodies_of_vehicle(connection, car["id"])
        assert [one["received_by"] for one in kept] == ["token front desk"]
        assert [row["item"] for row in windows.windows_of(connection, car["id"])] == ["tire_tread"]


def test_other_content_under_the_same_name_is_a_correction(send: Send) -> None:
    send(EXAMPLE)
    corrected = send({**EXAMPLE, "odometer": 41_240})
    assert (corrected.status_code, told(corrected)["outcome"]) == (201, "corrected")


def test_all_faults_are_told_at_once_with_their_fields(send: Send) -> None:
    readings = [
        {"item": "tire_tread", "position": "front_left", "unit": "32nds", "value": 30},
        {"item": "tire_age", "position": "front_left", "date_code": "5421"},
    ]
    answer = send(line_told(readings=readings, inspected_at="2031-01-01T09:00"))
    assert answer.status_code == 422
    faults = told(answer)["faults"]
    assert {one["field"] for one in faults} == {"inspected_at", "readings.0.value", "readings.1.date_code"}
    assert all(one["says"] for one in faults)


def test_doubtful_is_409_until_it_was_looked_at_again(send: Send) -> None:
    send(line_told(odometer=50_000, unit="mi"))
    doubtful = line_told(inspection="I-2", inspected_at="2026-04-02T09:10", odometer=5_000, unit="mi")
    first = send(doubtful)
    assert (first.status_code, [one["field"] for one in told(first)["doubts"]]) == (409, ["odometer"])
    assert send(doubtful, query="?accept_doubtful=false").status_code == 409
    assert send(doubtful, query="?accept_doubtful=true").status_code == 201
    assert send(doubtful).status_code == 200
    assert send(doubtful, query="?accept_doubtful=perhaps").status_code == 422


def test_of_several_lines_the_good_ones_go_in(send: Send) -> None:
    good, bad = line_told(), line_told(inspection="I-2", readings=[])
    visit = {"visit": "RO-1", "vehicle": "V-1", "opened_at": "2026-03-02T09:00"}
    body = "\n".join(json.dumps(one) for one in (good, visit, bad, good)) + "\n\n"
    answer = send(body, NDJSON)
    assert answer.status_code == 422
    assert [one["outcome"] for one in told(answer)["lines"]] == ["new", "new", "rejected", "unchanged"]
    assert [one["line"] for one in told(answer)["lines"]] == [1, 2, 3, 4]
    assert {name: told(answer)[name] for name in ("read", "kept", "unchanged", "rejected")} == {
        "read": 4, "kept": 2, "unchanged": 1, "rejected": 1,
    }  # fmt: skip
    assert send(f"{json.dumps(good)}\n{json.dumps(visit)}", NDJSON).status_code == 200


@pytest.mark.parametrize(
    ("body", "kind", "status"),
    [
        ("{broken", "application/json", 422),
        ("[]", "application/json", 422),
        ("", "application/json", 422),
        ("\n\n", NDJSON, 422),
        ('{"inspection": "J\xf6rg"}'.encode("latin-1"), "application/json", 422),
        ("inspection=I-1", "application/x-www-form-urlencoded", 415),
        ("{" + " " * 2_200_000 + "}", "application/json", 413),
    ],
)
def test_what_cannot_be_read_is_refused_in_words(send: Send, body: str | bytes, kind: str, status: int) -> None:
    answer = send(body, kind)
    assert answer.status_code == status
    if status == 422:
        assert told(answer)["faults"][0]["says"]
    else:
        assert told(answer)["do"]


@pytest.mark.parametrize("header", [None, "", "Bearer", "Bearer ", "Basic Zm9vOmJhcg==", "Bearer made-up"])
@pytest.mark.parametrize(("method", "address"), [("POST", "/api/v1/inspections"), ("GET", "/api/v1/openapi.json")])
def test_without_a_token_that_stands_nothing_answers(
    opened: Opened, client: FlaskClient, header: str | None, method: str, address: str
) -> None:
    headers = {} if header is None else {"Authorization": header}
    answer = client.open(address, method=method, json=EXAMPLE if method == "POST" else None, headers=headers)
    assert answer.status_code == 401
    assert answer.headers["WWW-Authenticate"].startswith("Bearer")
    assert told(answer)["do"]
    with opened[0].store.read() as connection:
        assert people.all_vehicles(connection, opened[1]) == []


def test_a_revoked_token_ends_at_once_and_its_name_is_not_used_again(opened: Opened, client: FlaskClient) -> None:
    house, shop_id = opened
    made = new_token(house.store, shop_id, "tablet", house.now(), "test")
    headers = {"Authorization": f"bearer {made}"}
    assert client.get("/api/v1/openapi.json", headers=headers).status_code == 200
    assert revoke_token(house.store, shop_id, "tablet", house.now(), "test")
    assert not revoke_token(house.store, shop_id, "tablet", house.now(), "test")
    answer = client.get("/api/v1/openapi.json", headers=headers)
    assert (answer.status_code, answer.headers["WWW-Authenticate"]) == (401, 'Bearer error="invalid_token"')
    with pytest.raises(TokenNameUnusable):
        new_token(house.store, shop_id, "tablet", house.now(), "test")


def test_the_token_itself_is_nowhere_in_the_store(opened: Opened, tmp_path: Path) -> None:
    house, shop_id = opened
    made = new_token(house.store, shop_id, "tablet", house.now(), "test")
    with house.store.read() as connection:
        kept = tokens.tokens_of_shop(connection, shop_id)
    assert made not in str(kept)
    assert len(kept[0]["token_hash"]) == 64
    # 256 bits, as OWASP ASVS 5.0, 7.2.3 asks at least half of for a reference token (from memory).
    assert len(made) >= 43


def test_the_command_makes_lists_and_revokes(opened: Opened, sqlite_url: str, monkeypatch: pytest.MonkeyPatch) -> None:
    for name in ("SECRET_KEY", "LEDGER_HASH_KEY"):
        monkeypatch.setenv(f"FOLLOWUP_{name}", "only-for-tests-0123456789abcdef")
    monkeypatch.setenv("FOLLOWUP_DATABASE_URL", sqlite_url)
    run = CliRunner().invoke
    made = run(token_command, ["new", "tablet"])
    assert made.exit_code == 0
    found = standing_token(opened[0].store, made.stdout.strip())
    assert found is not None
    assert found.name == "tablet"
    assert run(token_command, ["new", "tablet"]).exit_code == 2
    assert run(token_command, ["new", "other", "--shop", "nowhere"]).exit_code == 2
    assert run(token_command, ["list"]).stdout == "tablet: made 2026-11-24\n"
    assert run(token_command, ["revoke", "tablet"]).exit_code == 0
    assert run(token_command, ["revoke", "tablet"]).exit_code == 1
    assert run(token_command, ["list"]).stdout == "tablet: made 2026-11-24, revoked 2026-11-24\n"


def test_the_description_is_whole(opened: Opened, client: FlaskClient) -> None:
    """OpenAPI 3.1.0: every reference leads somewhere, and every field, item and answer of ours is in it."""
    text = json.dumps(description(BY_CODE))
    schemas = description(BY_CODE)["components"]["schemas"]
    for name in re.findall(r'"\$ref": "([^"]+)"', text):
        assert name.removeprefix("#/components/schemas/") in schemas
    for field, info in InspectionLine.model_fields.items():
        assert (info.alias or field) in schemas["InspectionLine"]["properties"]
    assert schemas["InspectionLine"]["required"] == ["inspection", "inspected_at", "customer", "vehicle", "readings"]
    assert "format" not in schemas["InspectionLine"]["properties"]["inspected_at"]
    for item in ALL:
        assert item.code in schemas["Reading"]["properties"]["item"]["description"]
    assert set(description(BY_CODE)["paths"]["/inspections"]["post"]["responses"]) == {
        "200", "201", "401", "409", "413", "415", "422",
    }  # fmt: skip


def test_every_address_of_the_interface_is_described(opened: Opened) -> None:
    app = create_app(opened[0])
    ours = {rule.rule.removeprefix("/api/v1") for rule in app.url_map.iter_rules() if rule.endpoint.startswith("api.")}
    assert ours == set(description(BY_CODE)["paths"])
