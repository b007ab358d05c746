"""`followup may-text`: its JSON and exit status, against the law of hours and stops and this project's caps.

Sources: 47 CFR 64.1200(c)(1), 8 a.m. to 9 p.m. at the called party's location; (a)(10), a stop counts however it was
told; consent in writing for marketing, (a)(2). Spacing and caps are this project's own.
"""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest
from click.testing import CliRunner

from followup.cli import main
from followup.core.consent import ConsentEntry
from followup.storage import consents
from tests.workflows.demo import Demo

NOBODY = "+13125550199"
# A Tuesday: the demo's invites leave 10:00-18:00.
TUESDAY = "2026-11-24T10:30"


def ask(number: str, cover: str, at: str | None = TUESDAY, *more: str) -> tuple[int, dict[str, Any]]:
    arguments = ["may-text", number, "--cover", cover, *(["--at", at] if at else []), *more]
    done = CliRunner().invoke(main, arguments)
    return done.exit_code, json.loads(done.stdout) if done.exit_code in (0, 1) else {}


def rules(answer: dict[str, Any]) -> list[str]:
    return [one["rule"] for one in answer["because"]]


def agree(demo: Demo, number: str, *covers: str, how: str = "tablet", event: str = "given") -> None:
    now = demo.house.now()
    entry = ConsentEntry(number, event, covers, now, now.date(), how, "I agree.", "1", "en", True)  # type: ignore[arg-type]  # a parameter of the test
    with demo.house.store.write() as connection:
        consents.append(connection, demo.shop_id, entry, demo.house.ledger_secret, "test")


def test_an_unknown_number_may_not_be_texted(demo: Demo) -> None:
    status, answer = ask(NOBODY, "upkeep")
    assert (status, answer["may"], rules(answer), answer["next_at"]) == (1, False, ["no_consent"], None)


def test_with_consent_and_within_hours_it_may(demo: Demo) -> None:
    agree(demo, NOBODY, "visits", "upkeep")
    status, answer = ask("(312) 555-0199", "upkeep")
    assert (status, answer["may"], rules(answer)) == (0, True, ["consent", "hours"])
    assert ask(NOBODY, "offers")[0] == 1


def test_spoken_consent_covers_visits_alone(demo: Demo) -> None:
    agree(demo, NOBODY, "visits", "upkeep", how="spoken")
    assert (ask(NOBODY, "visits")[0], ask(NOBODY, "upkeep")[0]) == (0, 1)


def test_before_hours_the_next_moment_is_named(demo: Demo) -> None:
    agree(demo, NOBODY, "visits", "upkeep")
    status, answer = ask(NOBODY, "upkeep", "2026-11-24T07:59:59")
    assert (status, rules(answer), answer["next_at"]) == (1, ["hours"], "2026-11-24T16:00:00+00:00")
    # Texts about a visit leave from 8:00 on, to the second.
    assert ask(NOBODY, "visits", "2026-11-24T07:59:59")[0] == 1
    assert ask(NOBODY, "visits", "2026-11-24T08:00:00")[0] == 0
    # A Sunday and Thanksgiving (the fourth Thursday of November, 5 U.S.C. 6103).
    assert ask(NOBODY, "upkeep", "2026-11-29T12:00")[0] == 1
    assert ask(NOBODY, "upkeep", "2026-11-26T12:00")[0] == 1


def test_a_stop_binds_every_cover(demo: Demo) -> None:
    agree(demo, NOBODY, "visits", "upkeep", "offers")
    agree(demo, NOBODY, event="taken_back", how="text_in")
    for cover in ("visits", "upkeep", "offers"):
        status, answer = ask(NOBODY, cover)
        assert (status, rules(answer), answer["next_at"]) == (1, ["stop"], None)


def test_a_second_invite_waits_for_the_spacing(demo: Demo) -> None:
    number = demo.a_planned_invite()["number"]
    demo.run("2026-11-24T12:00")
    status, answer = ask(number, "upkeep", "2026-11-25T12:00")
    assert (status, "spacing" in rules(answer)) == (1, True)
    assert answer["next_at"] >= "2026-12-07"
    assert ask(number, "visits", "2026-11-25T12:00")[0] == 0


def test_the_row_that_decided_is_named_and_a_file_holds_the_same(demo: Demo, tmp_path: Path) -> None:
    agree(demo, NOBODY, "visits", "upkeep", "offers")
    day = demo.house.now().date()
    file = tmp_path / "may.json"
    status, answer = ask(NOBODY, "upkeep", TUESDAY, "--json", str(file))
    assert (status, json.loads(file.read_text())) == (0, answer)
    assert answer["because"][0]["says"] == f"consent for upkeep stands: given on {day} (tablet, words of version 1)"
    assert file.stat().st_mode & 0o777 == 0o600
    agree(demo, NOBODY, "offers", event="narrowed", how="text_in")
    assert f"a part was taken back on {day} (text in" in ask(NOBODY, "offers")[1]["because"][0]["says"]
    assert ask(NOBODY, "upkeep")[0] == 0


def test_a_number_is_held_to_the_state_of_its_area_code(demo: Demo) -> None:
    # Dialing guides: Rhode Island on weekdays from 9 to 18; 401 is its area code. It is an hour ahead of the shop.
    agree(demo, "+14015550147", "visits")
    assert ask("+14015550147", "visits", "2026-11-24T16:59:59")[0] == 0
    assert ask("+14015550147", "visits", "2026-11-24T17:00:00")[0] == 1


@pytest.mark.parametrize("arguments", [["12", "--cover", "upkeep"], [NOBODY, "--cover", "ads"], [NOBODY],
                                       [NOBODY, "--cover", "upkeep", "--at", "soon"]])  # fmt: skip
def test_wrong_use_is_status_2(demo: Demo, arguments: list[str]) -> None:
    assert CliRunner().invoke(main, ["may-text", *arguments]).exit_code == 2
