"""Texts that leave: rows first. Who may claim one, and each move of its state (`core/text.py`).

Claims and moves are updates that name the state they expect; whoever changes the row owns it. `attempt` is the fence:
a worker that was paused past its lease finds another attempt number and changes nothing. Leases of claims go by the
database's clock (`machine.database_now`); everything that people see goes by the caller's `now`.
"""

from __future__ import annotations

import secrets
from collections.abc import Collection, Mapping
from datetime import datetime, timedelta
from functools import cache
from typing import Any

from sqlalchemy import Connection, Select, Update, and_, bindparam, case, func, or_, select, update

from followup.core.text import VALID_FOR, reason
from followup.storage import machine, rows, tables
from followup.storage.rows import Row

# Alerts to staff before answers, answers before visit texts, invites last: what somebody waits for goes first.
_ORDER = case({"alert": 0, "answer": 1, "visit": 2, "invite": 3}, value=tables.texts.c.kind, else_=4)
_REACHED = ("claimed", "in_flight", "sent", "unknown", "held")
MAY_HAVE_LEFT = ("in_flight", "sent", "unknown", "held")
_TEXTS = tables.texts.c
_IS_DUE = (_TEXTS.shop_id == rows.given("shop_id"), _TEXTS.state == "planned", _TEXTS.due_at <= rows.given("now"))
_NEXT = (
    select(tables.texts)
    .where(*_IS_DUE, _TEXTS.kind.not_in(rows.among("without")))
    .order_by(_ORDER, _TEXTS.due_at, _TEXTS.id)
    .limit(rows.given("most"))
)
_DUE = {"sqlite": _NEXT, "postgresql": _NEXT.with_for_update(skip_locked=True)}
_CLAIM = (
    update(tables.texts)
    .where(_TEXTS.id.in_(rows.among("text_ids")), _TEXTS.state == "planned")
    .values(
        state="claimed", claimed_by=rows.given("worker"), claimed_until=rows.given("until"), attempt=_TEXTS.attempt + 1
    )
    .returning(_TEXTS.id, _TEXTS.attempt)
)
_STANDING = (
    select(_TEXTS.id, _TEXTS.attempt)
    .where(_TEXTS.id.in_(rows.among("text_ids")), _TEXTS.state.in_(rows.among("states")))
    .order_by(_TEXTS.id)
    .with_for_update()
)
# Who changes several texts whose numbers it has not locked waits for nobody: who holds one of them may want another.
_CLAIMS_OVER = (
    select(_TEXTS.id)
    .where(
        _TEXTS.shop_id == rows.given("shop_id"), _TEXTS.state == "claimed", _TEXTS.claimed_until <= rows.given("now")
    )
    .with_for_update(skip_locked=True)
)
_REASONS = select(tables.reasons).where(tables.reasons.c.id.in_(rows.among("reason_ids")))


def raise_reason(
    connection: Connection,
    shop_id: int,
    kind: str,
    raised_by: str,
    now: datetime,
    *,
    phone_id: int | None,
    person_id: int | None = None,
    vehicle_id: int | None = None,
    items: Any = (),
) -> int:
    """The id of the reason that this (phone, cause) raises; the same cause raises it once."""
    table = tables.reasons
    made = rows.add_new(
        connection, table, shop_id=shop_id, kind=kind, raised_by=raised_by, raised_at=now, phone_id=phone_id,
        person_id=person_id, vehicle_id=vehicle_id, items=list(items),
    )  # fmt: skip
    if made is not None:
        return made
    query = select(table.c.id).where(
        table.c.shop_id == shop_id, table.c.kind == kind, table.c.phone_id == phone_id, table.c.raised_by == raised_by
    )
    found = rows.first(connection, query)
    assert found is not None
    return int(found["id"])


def load_reason(connection: Connection, reason_id: int) -> Row | None:
    """One reason."""
    return load_reasons(connection, [reason_id]).get(reason_id)


def load_reasons(connection: Connection, reason_ids: Collection[int]) -> dict[int, Row]:
    """These reasons by their ids."""
    return {row["id"]: row for row in rows.every(connection, _REASONS, reason_ids=reason_ids)}


def add_text(connection: Connection, **values: Any) -> int | None:
    """Plan a text; None where the same (number, reason, try) was planned before."""
    made = rows.add_new(connection, tables.texts, **{"state": "planned", **values})
    return made if made is not None or values["kind"] != "invite" else _planned_anew(connection, values)


def _planned_anew(connection: Connection, values: dict[str, Any]) -> int | None:
    """An invite that never left and whose time is over takes the same row again: that try was never made.

    What may have left (it was in flight, and no refusal was proven since) is not planned anew.
    """
    table, by = tables.texts, ("shop_id", "number", "reason_id", "try_no")
    is_same = [table.c[name] == values[name] for name in by]
    never_left = [
        table.c.state.in_(("planned", "dropped")),
        table.c.sent_at.is_(None),
        table.c.in_flight_at.is_(None),
        table.c.valid_until <= values["planned_at"],
    ]
    news = {"state": "planned", "state_because": None, **values}
    done = connection.execute(update(table).where(*is_same, *never_left).values(**news).returning(table.c.id)).first()
    return int(done[0]) if done else None


def plan_text(
    connection: Connection,
    shop_id: int,
    code: str,
    raised_by: str,
    now: datetime,
    *,
    phone_id: int,
    number: str,
    language: str,
    facts: dict[str, Any],
    person_id: int | None = None,
    vehicle_id: int | None = None,
    items: Any = (),
    try_no: int = 1,
    due_at: datetime | None = None,
    valid_until: datetime | None = None,
    is_endless: bool = False,
    asks: str | None = None,
    **values: Any,
) -> int | None:
    """Plan the text of a reason (a code of `core/text.py`): the reason's row and the text's in one transaction.

    None where the same (number, cause, try) was planned before. Without `valid_until` the text is valid for as long as
    texts of its kind are, from `due_at` on; `is_endless` (a caution) until a person took over.
    """
    about = reason(code)
    due = due_at or now
    if valid_until is None and not is_endless:
        valid_until = due + VALID_FOR.get(about.kind, VALID_FOR["invite"])
    reason_id = raise_reason(
        connection,
        shop_id,
        code,
        raised_by,
        now,
        phone_id=phone_id,
        person_id=person_id,
        vehicle_id=vehicle_id,
        items=items,
    )
    return add_text(
        connection, shop_id=shop_id, public_id=secrets.token_urlsafe(16), phone_id=phone_id, number=number,
        kind=about.kind, reason_id=reason_id, reason=code, try_no=try_no, vehicle_id=vehicle_id, language=language,
        facts=facts, planned_at=now, due_at=due, valid_until=valid_until, asks=asks, **values,
    )  # fmt: skip


def due_texts(
    connection: Connection, shop_id: int, now: datetime, most: int, without: Collection[str] = ()
) -> list[Row]:
    """Planned texts whose moment has come, the most awaited kind first; `without` some kinds."""
    query = _DUE[connection.dialect.name]
    return rows.every(connection, query, shop_id=shop_id, now=now, without=without, most=most)


def claim(connection: Connection, text_id: int, worker: str, lasts: timedelta) -> int | None:
    """Claim one planned text for so long; its new attempt number, or None where another worker was first."""
    return claim_all(connection, [text_id], worker, lasts).get(text_id)


def claim_all(connection: Connection, text_ids: Collection[int], worker: str, lasts: timedelta) -> dict[int, int]:
    """The same for several: the new attempt number of each that was claimed."""
    until = machine.database_now(connection) + lasts
    done = connection.execute(_CLAIM, {"text_ids": text_ids, "worker": worker, "until": until})
    return {row[0]: row[1] for row in done}


def move(
    connection: Connection, text_id: int, attempt: int, from_state: str | tuple[str, ...], to_state: str, **values: Any
) -> bool:
    """Move a text on if it is still in a state and in the attempt that this worker saw; False where it is not."""
    states = (from_state,) if isinstance(from_state, str) else from_state
    news = {"state": to_state, **values}
    asked = {"of_text": text_id, "of_attempt": attempt, **{f"new_{name}": value for name, value in news.items()}}
    return connection.execute(_moving(states, tuple(news)), asked).rowcount == 1


def move_all(
    connection: Connection, attempts: Mapping[int, int], from_state: str | tuple[str, ...], to_state: str,
    news: Mapping[int, Mapping[str, Any]],
) -> set[int]:  # fmt: skip
    """The same for several texts by their ids, with the values of each (of the same columns); which of them moved."""
    if len(attempts) == 1:
        ((text_id, attempt),) = attempts.items()
        return {text_id} if move(connection, text_id, attempt, from_state, to_state, **news[text_id]) else set()
    states = (from_state,) if isinstance(from_state, str) else from_state
    # Nobody else changes these until this transaction ends, so all of them can be changed by one statement.
    found = rows.every(connection, _STANDING, text_ids=list(attempts), states=states)
    mine = {row["id"] for row in found if row["attempt"] == attempts[row["id"]]}
    asked = [
        {"of_text": one, "of_attempt": attempts[one], "new_state": to_state}
        | {f"new_{name}": value for name, value in news[one].items()}
        for one in sorted(mine)
    ]
    if asked:
        columns = tuple(next(iter(news.values())))
        connection.execute(_moving(states, ("state", *columns)), asked)
    return mine


@cache
def _moving(from_states: tuple[str, ...], columns: tuple[str, ...]) -> Update:
    """Made once for each kind of move: a text that leaves is moved three times."""
    table = tables.texts
    is_seen = (table.c.id == bindparam("of_text"), table.c.attempt == bindparam("of_attempt"))
    news = {name: bindparam(f"new_{name}", type_=table.c[name].type) for name in columns}
    # Not by IN, whose places are filled for one row at a time.
    return update(table).where(*is_seen, or_(*(table.c.state == one for one in from_states))).values(**news)


def release_expired_claims(connection: Connection, shop_id: int) -> int:
    """Claims whose lease ran out are provably unsent: back to planned at once. How many there were; one that somebody
    decides about at this moment is left to the next look."""
    found = rows.every(connection, _CLAIMS_OVER, shop_id=shop_id, now=machine.database_now(connection))
    back = {"state": "planned", "claimed_by": None, "claimed_until": None}
    return rows.change_all(connection, tables.texts, [row["id"] for row in found], back)


def drop_planned(
    connection: Connection, shop_id: int, because: str, *, number: str | None = None, vehicle_id: int | None = None,
    kinds: tuple[str, ...] = ("invite", "visit", "answer"), reason_codes: tuple[str, ...] = (),
    request_id: int | None = None,
) -> int:  # fmt: skip
    """Drop what is queued and matches all that is given; how many there were. Whoever holds a claim finds out before
    the first byte, since the move to in_flight names the state it expects."""
    table = tables.texts
    wanted = [
        table.c.shop_id == shop_id, table.c.state.in_(("planned", "claimed")), table.c.kind.in_(kinds),
    ]  # fmt: skip
    if number is not None:
        wanted.append(table.c.number == number)
    if vehicle_id is not None:
        wanted.append(table.c.vehicle_id == vehicle_id)
    if request_id is not None:
        wanted.append(table.c.request_id == request_id)
    if reason_codes:
        wanted.append(table.c.reason.in_(reason_codes))
    done = connection.execute(update(table).where(and_(*wanted)).values(state="dropped", state_because=because))
    return done.rowcount


def load_text(connection: Connection, text_id: int) -> Row | None:
    """One text by id."""
    return rows.first(connection, select(tables.texts).where(tables.texts.c.id == text_id))


def text_of_public_id(connection: Connection, public_id: str) -> Row | None:
    """The text that a delivery report's address names."""
    return rows.first(connection, select(tables.texts).where(tables.texts.c.public_id == public_id))


def texts_of_phone(connection: Connection, phone_id: int) -> list[Row]:
    """All texts to a phone, oldest first."""
    table = tables.texts
    query = select(table).where(table.c.phone_id == phone_id)
    return rows.every(connection, query.order_by(func.coalesce(table.c.sent_at, table.c.due_at), table.c.id))


def texts_of_shop(connection: Connection, shop_id: int, since: datetime | None = None) -> list[Row]:
    """All texts of a shop, in the order in which they were planned; or those that were due since then."""
    table = tables.texts
    query = select(table).where(table.c.shop_id == shop_id).order_by(table.c.id)
    return rows.every(connection, query if since is None else query.where(table.c.due_at >= since))


def reasons_without_text(connection: Connection, shop_id: int) -> list[Row]:
    """Reasons for texts of which no text was planned: there are none, since both are written in one transaction."""
    texts, reasons = tables.texts, tables.reasons
    has_text = select(texts.c.id).where(texts.c.reason_id == reasons.c.id).exists()
    return rows.every(connection, select(reasons).where(reasons.c.shop_id == shop_id, ~has_text))


def invites_by_phone(
    connection: Connection, shop_id: int, since: datetime, now: datetime, phone_ids: Collection[int] | None = None
) -> dict[int, list[Row]]:
    """Invites that left since then or may leave yet, with `raised_by` and `vehicle_code`: spacing, tries and
    caps count them. Oldest first; of these phones, or of all of the shop."""
    asked: dict[str, Any] = {"shop_id": shop_id, "since": since, "now": now}
    if phone_ids is not None:
        asked["phone_ids"] = phone_ids
    found: dict[int, list[Row]] = {}
    for row in rows.every(connection, _INVITES if phone_ids is None else _INVITES_OF_PHONES, **asked):
        found.setdefault(row["phone_id"], []).append(row)
    return found


def _invites() -> Select[Any]:
    table, reasons, vehicles = tables.texts, tables.reasons, tables.vehicles
    joined = table.join(reasons, table.c.reason_id == reasons.c.id).outerjoin(
        vehicles, table.c.vehicle_id == vehicles.c.id
    )
    at = func.coalesce(table.c.sent_at, table.c.due_at)
    may_leave = or_(_TEXTS.state != "planned", _TEXTS.valid_until.is_(None), _TEXTS.valid_until > rows.given("now"))
    return (
        select(table)
        .add_columns(reasons.c.raised_by, vehicles.c.code.label("vehicle_code"))
        .select_from(joined)
        .where(
            _TEXTS.kind == "invite", _TEXTS.state.not_in(("dropped", "failed")), at >= rows.given("since"), may_leave
        )
        .order_by(at, table.c.id)
    )


_INVITES = _invites().where(_TEXTS.shop_id == rows.given("shop_id"))
_INVITES_OF_PHONES = _invites().where(
    rows.beside(_TEXTS.shop_id) == rows.given("shop_id"), _TEXTS.phone_id.in_(rows.among("phone_ids"))
)


def told_about(connection: Connection, text: Row, since: datetime) -> tuple[datetime, ...]:
    """When other texts about the same booking, or of the same reason where there is none, left to the phone."""
    table = tables.texts
    subject = table.c.request_id == text["request_id"] if text["request_id"] else table.c.reason_id == text["reason_id"]
    query = select(table.c.in_flight_at).where(
        table.c.phone_id == text["phone_id"], subject, table.c.id != text["id"], table.c.kind.in_(("invite", "visit")),
        table.c.state.in_(MAY_HAVE_LEFT), table.c.in_flight_at >= since,
    )  # fmt: skip
    return tuple(row["in_flight_at"] for row in rows.every(connection, query))


def queued_texts(connection: Connection, shop_id: int) -> list[Row]:
    """Planned texts, the next first."""
    table = tables.texts
    query = (
        select(table).where(table.c.shop_id == shop_id, table.c.state == "planned").order_by(table.c.due_at, table.c.id)
    )
    return rows.every(connection, query)


def change_text(connection: Connection, text_id: int, **values: Any) -> None:
    """Change a text that is not moving (tests and a person's click use `move`)."""
    rows.change(connection, tables.texts, text_id, **values)


def planned_for(connection: Connection, phone_id: int) -> list[Row]:
    """Texts to the phone that have not left."""
    table = tables.texts
    query = select(table).where(table.c.phone_id == phone_id, table.c.state.in_(("planned", "claimed")))
    return rows.every(connection, query.order_by(table.c.id))


def drop_one(connection: Connection, text_id: int, because: str) -> bool:
    """Drop one queued text; False where it left already."""
    table = tables.texts
    done = connection.execute(
        update(table)
        .where(table.c.id == text_id, table.c.state.in_(("planned", "claimed")))
        .values(state="dropped", state_because=because)
    )
    return done.rowcount == 1
