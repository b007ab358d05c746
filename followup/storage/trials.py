"""Trials of two wordings: the open one of a text, and what its customers did."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import ColumnElement, Connection, desc, func, or_, select, update

from followup.core.planning.draw import is_second
from followup.core.planning.wording_trial import (
    ANSWERED_WITHIN_DAYS,
    BOOKED_WITHIN_DAYS,
    STOPPED_WITHIN_DAYS,
    Arm,
)
from followup.storage import rows, tables
from followup.storage.rows import Row

_TRIALS = tables.wording_trials.c
_OF_TEXT = [_TRIALS[name] == rows.given(name) for name in ("shop_id", "reason", "language")]
_OPEN = select(tables.wording_trials).where(*_OF_TEXT, _TRIALS.ended_at.is_(None))


@dataclass(frozen=True)
class Drawn:
    """The wording that a phone reads while a trial runs: the version's row, or None for the shipped text."""

    wording: Row | None


def begin(connection: Connection, shop_id: int, **trial: Any) -> int | None:
    """Keep a new trial; None where one of that text and language is open already."""
    return rows.add_new(connection, tables.wording_trials, shop_id=shop_id, **trial)


def end(connection: Connection, shop_id: int, trial_id: int, now: datetime, because: str) -> bool:
    """End a trial; False where it is none of this shop or has ended."""
    table = tables.wording_trials
    done = connection.execute(
        update(table)
        .where(table.c.id == trial_id, table.c.shop_id == shop_id, table.c.ended_at.is_(None))
        .values(ended_at=now, ended_because=because)
    )
    return done.rowcount == 1


def of_text(connection: Connection, shop_id: int, reason: str, language: str) -> list[Row]:
    """Every trial of that text, newest first."""
    return _trials(connection, shop_id, tables.wording_trials.c.reason == reason,
                   tables.wording_trials.c.language == language)  # fmt: skip


def open_trials(connection: Connection, shop_id: int) -> list[Row]:
    """Every trial of the shop that has not ended."""
    return _trials(connection, shop_id, tables.wording_trials.c.ended_at.is_(None))


def of_shop(connection: Connection, shop_id: int) -> list[Row]:
    """Every trial of the shop, newest first."""
    return _trials(connection, shop_id)


def _trials(connection: Connection, shop_id: int, *conditions: ColumnElement[bool]) -> list[Row]:
    table = tables.wording_trials
    query = select(table).where(table.c.shop_id == shop_id, *conditions)
    return rows.every(connection, query.order_by(desc(table.c.id)))


def open_trial(connection: Connection, shop_id: int, reason: str, language: str) -> Row | None:
    """The open trial of that text, or None."""
    return rows.first(connection, _OPEN, shop_id=shop_id, reason=reason, language=language)


def drawn_wording(connection: Connection, trial: Row | None, phone_id: int | None) -> Drawn | None:
    """What the draw of the open trial gives this phone; None where no trial is open."""
    if trial is None or phone_id is None:
        return None
    wording_id = trial["second_id"] if is_second(trial["draw_key"], phone_id) else trial["first_id"]
    if wording_id is None:
        return Drawn(None)
    return Drawn(rows.first(connection, select(tables.wordings).where(tables.wordings.c.id == wording_id)))


def arms(connection: Connection, trial: Row) -> tuple[Arm, Arm]:
    """What came of both wordings, by the draw: a customer counts from the first text of the trial that left.

    Who booked, answered or stopped counts once. A booking by any way counts, since a text may well lead to a call.
    """
    first_texts = _first_texts(connection, trial)
    by_phone = set(first_texts)
    answered = _within(first_texts, _replies(connection, trial), ANSWERED_WITHIN_DAYS)
    booked = _within(first_texts, _bookings(connection, trial), BOOKED_WITHIN_DAYS)
    stopped = _within(first_texts, _stops(connection, trial), STOPPED_WITHIN_DAYS)
    second = {one for one in by_phone if is_second(trial["draw_key"], one)}

    def of(mine: set[int]) -> Arm:
        return Arm(len(mine), len(mine & answered), len(mine & booked), len(mine & stopped))

    return of(by_phone - second), of(second)


def _first_texts(connection: Connection, trial: Row) -> dict[int, datetime]:
    table = tables.texts
    until = [] if trial["ended_at"] is None else [table.c.sent_at < trial["ended_at"]]
    query = (
        select(table.c.phone_id, func.min(table.c.sent_at).label("at"))
        .where(
            table.c.shop_id == trial["shop_id"], table.c.reason == trial["reason"],
            table.c.language == trial["language"], table.c.state == "sent", table.c.sent_at >= trial["begun_at"],
            table.c.phone_id.is_not(None), *until,
        )
        .group_by(table.c.phone_id)
    )  # fmt: skip
    return {row["phone_id"]: row["at"] for row in rows.every(connection, query)}


def _replies(connection: Connection, trial: Row) -> Iterable[tuple[int, datetime]]:
    table = tables.inbound
    query = select(table.c.phone_id, table.c.received_at.label("at")).where(
        table.c.shop_id == trial["shop_id"], table.c.received_at >= trial["begun_at"], table.c.phone_id.is_not(None)
    )
    return [(row["phone_id"], row["at"]) for row in rows.every(connection, query)]


def _bookings(connection: Connection, trial: Row) -> Iterable[tuple[int, datetime]]:
    """Requests by the phone, and those that staff noted for a person who uses it."""
    table, ties = tables.booking_requests, tables.person_phones
    query = (
        select(func.coalesce(table.c.phone_id, ties.c.phone_id).label("phone_id"), table.c.asked_at.label("at"))
        .select_from(table.outerjoin(ties, ties.c.person_id == table.c.person_id))
        .where(table.c.shop_id == trial["shop_id"], table.c.asked_at >= trial["begun_at"])
        .where(or_(table.c.phone_id.is_not(None), ties.c.phone_id.is_not(None)))
    )
    return [(row["phone_id"], row["at"]) for row in rows.every(connection, query)]


def _stops(connection: Connection, trial: Row) -> Iterable[tuple[int, datetime]]:
    ledger, phones = tables.consents, tables.phones
    query = (
        select(phones.c.id.label("phone_id"), ledger.c.at)
        .select_from(ledger.join(phones, (phones.c.number == ledger.c.number) & (phones.c.shop_id == ledger.c.shop_id)))
        .where(
            ledger.c.shop_id == trial["shop_id"], ledger.c.event == "taken_back", ledger.c.at >= trial["begun_at"],
        )
    )  # fmt: skip
    return [(row["phone_id"], row["at"]) for row in rows.every(connection, query)]


def _within(first_texts: dict[int, datetime], happened: Iterable[tuple[int, datetime]], days: int) -> set[int]:
    lasts = timedelta(days=days)
    return {
        phone_id
        for phone_id, at in happened
        if phone_id in first_texts and first_texts[phone_id] <= at <= first_texts[phone_id] + lasts
    }
