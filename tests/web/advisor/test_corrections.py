"""A wrong reading is put right in two presses, kept with its context, and comes back as a file (our rules)."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path

import pytest
from click.testing import CliRunner
from flask.testing import FlaskClient

from followup.cli.understand import understand
from followup.storage import consents
from tests.web.advisor.conftest import Advisor
from tests.workflows.counter import NUMBER, Counter


@pytest.fixture
def request_id(counter: Counter) -> int:
    """A request that was made of a text."""
    return counter.ask("tuesday is out", inbound_id=counter.read_in("tuesday is out"))


def exported(signed_in: Callable[[str], FlaskClient]) -> list[dict[str, object]]:
    """The lines of the manager's file."""
    answer = signed_in("manager").get("/manager/corrected-readings")
    assert answer.status_code == 200
    assert "attachment" in answer.headers["Content-Disposition"]
    return [json.loads(line) for line in answer.text.splitlines()]


def test_choose_and_confirm_is_all_that_it_takes(
    request_id: int, counter: Counter, advisor: Advisor, signed_in: Callable[[str], FlaskClient]
) -> None:
    inbound_id = counter.request(request_id)["inbound_id"]
    page = advisor.page(f"/advisor/requests/{request_id}")
    assert "Was something else meant?" in page and f"/advisor/texts/{inbound_id}/meant" in page
    done = advisor.press(f"/advisor/texts/{inbound_id}/meant", meaning="decline", request_id=request_id)
    assert done.headers["Location"] == f"/advisor/requests/{request_id}"
    assert "Meant was" in advisor.page(f"/advisor/requests/{request_id}")
    (kept,) = exported(signed_in)
    assert kept["meant"] == {"meaning": "decline", "start": None}
    assert kept["reply"]["text"] == "tuesday is out"  # type: ignore[index]  # an object of JSON


def test_the_file_is_what_the_command_replays(
    request_id: int, counter: Counter, advisor: Advisor, signed_in: Callable[[str], FlaskClient], tmp_path: Path
) -> None:
    inbound_id = counter.request(request_id)["inbound_id"]
    advisor.press(f"/advisor/texts/{inbound_id}/meant", meaning="decline")
    path = tmp_path / "corrected.jsonl"
    path.write_text("".join(json.dumps(line) + "\n" for line in exported(signed_in)), encoding="utf-8")
    done = CliRunner().invoke(understand, ["--replay", str(path)])
    assert done.exit_code == 0
    assert "1 read again: 1 same" in done.stderr


def test_a_second_correction_takes_the_place_of_the_first(
    counter: Counter, advisor: Advisor, signed_in: Callable[[str], FlaskClient]
) -> None:
    inbound_id = counter.read_in("tuesday at 9 works")
    for meaning in ("later", "propose"):
        advisor.press(f"/advisor/texts/{inbound_id}/meant", meaning=meaning, day="2026-12-01", time="09:00")
    (kept,) = exported(signed_in)
    assert kept["meant"] == {"meaning": "propose", "start": "2026-12-01T09:00"}


def test_a_stop_that_was_not_read_stops_the_texts(counter: Counter, advisor: Advisor) -> None:
    inbound_id = counter.read_in("spare me your prose")
    advisor.press(f"/advisor/texts/{inbound_id}/meant", meaning="stop")
    with counter.store.read() as connection:
        assert consents.standing_of(connection, counter.shop_id, NUMBER).is_stopped


def test_a_symptom_that_was_not_read_raises_its_alert_once(counter: Counter, advisor: Advisor) -> None:
    inbound_id = counter.read_in("it does the thing again")
    for _ in range(2):
        advisor.press(f"/advisor/texts/{inbound_id}/meant", meaning="symptom")
    assert [one["kind"] for one in counter.alerts()].count("symptom_now") == 1


@pytest.mark.parametrize(
    "fields", [{}, {"meaning": "no such"}, {"meaning": "propose", "time": "09:00"}, {"meaning": "later", "day": "soon"}]
)
def test_what_cannot_be_kept_is_told(counter: Counter, advisor: Advisor, fields: dict[str, str]) -> None:
    inbound_id = counter.read_in("tuesday at 9 works")
    assert advisor.press(f"/advisor/texts/{inbound_id}/meant", **fields).status_code == 422


def test_a_text_that_nothing_has_read_yet_cannot_be_put_right(counter: Counter, advisor: Advisor) -> None:
    unread = counter.write_in("not answered yet")
    assert advisor.press(f"/advisor/texts/{unread}/meant", meaning="later").status_code == 404
    assert advisor.client.get(f"/advisor/texts/{unread + 1000}/meant").status_code == 404
