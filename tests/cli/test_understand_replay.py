"""`followup understand --replay`: what advisors put right, read again; exit 1 when anything is worse (our rules)."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

from click.testing import CliRunner, Result

from followup.cli.understand import understand
from followup.core.replies.contract import ReplyIn
from followup.core.replies.understand import understand as read_reply

NOW = "2026-03-04T10:00:00"


def line(text: str, read_as: dict[str, Any], meaning: str, start: str | None = None) -> str:
    """A correction of a text, with what is read of it now changed by `read_as` to stand for an older version."""
    reply = {"text": text, "now": NOW}
    read = json.loads(read_reply(ReplyIn.model_validate_json(json.dumps(reply))).model_dump_json()) | read_as
    return json.dumps({"reply": reply, "read": read, "meant": {"meaning": meaning, "start": start}})


def replay(folder: Path, *lines: str) -> Result:
    """Run the command over a file of these lines."""
    path = folder / "corrected.jsonl"
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")
    return CliRunner().invoke(understand, ["--replay", str(path)])


def test_what_is_read_rightly_now_is_better(tmp_path: Path) -> None:
    wrong = {"meanings": ["later"], "handoff": False}
    done = replay(tmp_path, line("friday at 10 works", wrong, "propose", "2026-03-06T10:00"))
    assert done.exit_code == 0
    assert json.loads(done.stdout)["verdict"] == "better"
    assert "1 read again: 1 better" in done.stderr


def test_what_was_read_rightly_and_is_not_any_more_is_worse(tmp_path: Path) -> None:
    done = replay(tmp_path, line("friday at 10 works", {"meanings": ["decline"]}, "decline"))
    assert done.exit_code == 1
    told = json.loads(done.stdout)
    assert (told["verdict"], told["meant"]["meaning"], told["now"]["meanings"]) == ("worse", "decline", ["propose"])


def test_a_wrong_reading_that_is_acted_on_where_a_person_read_it_before_is_worse(tmp_path: Path) -> None:
    careful = {"meanings": ["unclear"], "handoff": True, "certainty": 0.3}
    assert replay(tmp_path, line("no thanks", careful, "later")).exit_code == 1


def test_what_is_read_as_it_was_is_not_written(tmp_path: Path) -> None:
    done = replay(tmp_path, line("friday at 10 works", {"certainty": 0.11}, "later"))
    assert (done.exit_code, done.stdout) == (0, "")
    assert "1 same" in done.stderr


def test_a_day_without_a_time_is_compared_as_a_day(tmp_path: Path) -> None:
    wrong_day = {"times": [{"start": "2026-03-13T10:00", "end": None, "grain": "time"}]}
    done = replay(tmp_path, line("friday at 10 works", wrong_day, "propose", "2026-03-06"))
    assert json.loads(done.stdout)["verdict"] == "better"


def test_a_line_that_cannot_be_read_is_told_and_the_others_are_replayed(tmp_path: Path) -> None:
    good = line("friday at 10 works", {"meanings": ["later"]}, "propose")
    done = replay(tmp_path, "{}", line("hi", {}, "no_such_meaning"), good)
    told = [json.loads(one) for one in done.stdout.splitlines()]
    assert done.exit_code == 1
    assert ["error" in one for one in told] == [True, True, False]
    assert "reply, read and meant" in told[0]["error"]
    assert "no such meaning" in told[1]["error"]
