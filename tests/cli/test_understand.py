"""`followup understand`: one JSON line out for each line in, in order; what cannot be read says what to do."""

from __future__ import annotations

import json

from click.testing import CliRunner

from followup.cli.understand import understand


def lines(fed: str) -> tuple[int, list[dict[str, object]]]:
    """Exit status and what was written."""
    done = CliRunner().invoke(understand, input=fed)
    return done.exit_code, [json.loads(line) for line in done.output.splitlines()]


def line(text: str) -> str:
    """One line of the contract."""
    return json.dumps({"text": text, "now": "2026-03-04T10:00:00"}) + "\n"


# source: the reply contract, "an unreadable line gives an error in its place and exit status 1 at the end"
def test_every_line_is_answered_in_order() -> None:
    status, out = lines(line("yes") + line("stop") + line("sí"))
    assert status == 0
    assert [one["meanings"] for one in out] == [["accept"], ["stop"], ["accept"]]


def test_an_unreadable_line_is_answered_with_what_to_do_and_the_others_still_are() -> None:
    status, out = lines("not json\n" + line("yes") + '{"text": "no"}\n')
    assert status == 1
    assert "JSON" in str(out[0]["error"])
    assert out[1]["meanings"] == ["accept"]
    assert "now" in str(out[2]["error"])


def test_a_zone_or_hours_that_cannot_be_are_named() -> None:
    fed = [
        {"text": "yes", "now": "2026-03-04T10:00:00", "zone": "Mars/North"},
        {"text": "yes", "now": "2026-03-04T10:00:00", "hours": {"mon": ["18:00", "07:00"]}},
    ]
    status, out = lines("".join(json.dumps(one) + "\n" for one in fed))
    assert status == 1
    assert "zone" in str(out[0]["error"])
    assert "closes" in str(out[1]["error"])
