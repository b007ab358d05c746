"""`followup understand`: replies as JSON lines on standard input, their meanings as JSON lines out, in order."""

from __future__ import annotations

import json
import sys

import click


@click.command()
def understand() -> None:
    """Read replies (JSON lines, `text` and `now` at least) and write what each one means.

    A line that cannot be read gives {"error": "..."} in its place; the others are still answered, and the exit
    status is 1.
    """
    from pydantic import ValidationError

    from followup.core.replies.contract import ReplyIn
    from followup.core.replies.understand import understand as read_reply

    has_failed = False
    sys.stdin.reconfigure(encoding="utf-8", errors="replace")  # type: ignore[union-attr]  # text streams have it
    for line in sys.stdin:
        if not line.strip():
            continue
        try:
            click.echo(read_reply(ReplyIn.model_validate_json(line)).model_dump_json())
        except ValidationError as fault:
            has_failed = True
            click.echo(json.dumps({"error": _explained(fault)}, ensure_ascii=False))
    if has_failed:
        sys.exit(1)


def _explained(fault: object) -> str:
    """What is wrong with a line and what to do, in one sentence a fault."""
    from pydantic import ValidationError

    if not isinstance(fault, ValidationError):
        return str(fault)
    wrong = [f"{'.'.join(str(part) for part in one['loc']) or 'line'}: {one['msg']}" for one in fault.errors()[:3]]
    return "; ".join(wrong) + ". Mend the line; each is one JSON object with at least text and now."
