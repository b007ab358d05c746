"""Which due windows an invite speaks of: asked when it is put into words, and when a customer answers what it said."""

from __future__ import annotations

from datetime import date, timedelta

from followup.storage.rows import Row

# What is likely due within this time may stand in an invite beside what is due now.
SOON = timedelta(days=120)


def worth_a_line(kind: str, rows: list[Row], today: date) -> list[Row]:
    """An invite speaks of what is due or comes soon; what is far off is said only where there is nothing else."""
    soon = [row for row in rows if row["body"]["is_past"] or _is_soon(row["body"]["likely"], today)]
    return soon if soon and kind == "invite" else rows


def _is_soon(likely: str | None, today: date) -> bool:
    return likely is not None and date.fromisoformat(likely) <= today + SOON
