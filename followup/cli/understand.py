"""`followup understand`: replies as JSON lines on standard input, their meanings as JSON lines out, in order."""

from __future__ import annotations

import json
import sys
from collections import Counter
from collections.abc import Iterable
from pathlib import Path

import click

NOT_READ = ". Mend the line; each is one JSON object with at least "


@click.command()
@click.option(
    "--replay",
    "replayed",
    type=click.Path(exists=True, dir_okay=False, path_type=Path),
    help="Read again what advisors put right (the file from the manager's page) and write what differs now.",
)
def understand(replayed: Path | None) -> None:
    """Read replies (JSON lines, `text` and `now` at least) and write what each one means.

    A line that cannot be read gives {"error": "..."} in its place; the others are still answered, and the exit
    status is 1.

    With --replay, each line of FILE holds a reply with its context, what was read, and what was meant. What is read
    differently now is written as JSON lines with its verdict (better, worse, other); the counts go to standard error,
    and the exit status is 1 when anything is read worse than it was.
    """
    sys.stdin.reconfigure(encoding="utf-8", errors="replace")  # type: ignore[union-attr]  # text streams have it
    is_well = _replay(replayed) if replayed else _answer(sys.stdin)
    if not is_well:
        sys.exit(1)


def _answer(lines: Iterable[str]) -> bool:
    """Write the meaning of each line; whether every one could be read."""
    from pydantic import ValidationError

    from followup.core.replies.contract import ReplyIn
    from followup.core.replies.understand import understand as read_reply

    has_failed = False
    for line in lines:
        if not line.strip():
            continue
        try:
            click.echo(read_reply(ReplyIn.model_validate_json(line)).model_dump_json())
        except ValidationError as fault:
            has_failed = True
            click.echo(json.dumps({"error": _explained(fault, "text and now")}, ensure_ascii=False))
    return not has_failed


def _replay(path: Path) -> bool:
    """Write what is read differently; whether nothing is worse and every line could be read."""
    from pydantic import ValidationError

    from followup.core.replies.contract import Correction
    from followup.core.replies.correction import replay

    counted: Counter[str] = Counter()
    with path.open(encoding="utf-8", errors="replace") as lines:
        for line in lines:
            if not line.strip():
                continue
            try:
                again = replay(Correction.model_validate_json(line))
            except ValidationError as fault:
                counted["not read"] += 1
                click.echo(json.dumps({"error": _explained(fault, "reply, read and meant")}, ensure_ascii=False))
                continue
            counted[again.verdict] += 1
            if again.verdict != "same":
                click.echo(again.model_dump_json())
    told = ", ".join(
        f"{counted[one]} {one}" for one in ("same", "better", "other", "worse", "not read") if counted[one]
    )
    click.echo(f"{sum(counted.values())} read again: {told or 'nothing in the file'}", err=True)
    return not (counted["worse"] or counted["not read"])


def _explained(fault: object, needs: str) -> str:
    """What is wrong with a line and what to do, in one sentence a fault."""
    from pydantic import ValidationError

    if not isinstance(fault, ValidationError):
        return str(fault)
    wrong = [f"{'.'.join(str(part) for part in one['loc']) or 'line'}: {one['msg']}" for one in fault.errors()[:3]]
    return "; ".join(wrong) + NOT_READ + needs + "."
