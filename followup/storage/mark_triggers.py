"""The triggers that set marks (`marks.py`), in the transaction of the change, so that no writer can forget to."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from sqlalchemy import Connection

_PLAN, _FORECAST = "plan_marks", "forecast_marks"
_ANY = ("INSERT", "UPDATE", "DELETE")
_KEPT = ("INSERT", "UPDATE")
_COUNTS = "state NOT IN ('dropped', 'failed')"


@dataclass(frozen=True)
class _Watched:
    """A table whose rows are about somebody: what is marked of which of its columns, and when.

    `of` are (column of the mark, expression of the row); `{row}` stands for the row as it is, or was if it went.
    """

    table: str
    events: tuple[str, ...]
    mark: str
    of: tuple[tuple[str, str], ...]
    when: str = ""
    since: str = ""

    @property
    def name(self) -> str:
        """Of its triggers."""
        return f"{self.mark}_of_{self.table}"


def _about(table: str, *columns: str, mark: str = _PLAN, events: tuple[str, ...] = _ANY, when: str = "") -> _Watched:
    return _Watched(table, events, mark, tuple((column, f"{{row}}.{column}") for column in columns), when)


def _itself(table: str, column: str) -> _Watched:
    return _Watched(table, ("UPDATE",), _PLAN, ((column, "{row}.id"),))


_OF_NUMBER = "(SELECT id FROM phones WHERE shop_id = {row}.shop_id AND number = {row}.number)"
# An invite counts for spacing and tries by when it leaves, and no more when it was dropped.
_LEAVES_OTHERWISE = (
    "NEW.kind = 'invite' AND (NEW.sent_at IS DISTINCT FROM OLD.sent_at OR NEW.due_at IS DISTINCT FROM OLD.due_at "
    "OR NEW.valid_until IS DISTINCT FROM OLD.valid_until OR NEW.phone_id IS DISTINCT FROM OLD.phone_id "
    f"OR (NEW.{_COUNTS}) <> (OLD.{_COUNTS}))"
)
# All that `storage/pictures.py` reads of a phone but due windows, whose one writer marks them; and all that
# `storage/histories.py` reads of a car.
WATCHED = (
    _itself("phones", "phone_id"),
    _itself("persons", "person_id"),
    _itself("vehicles", "vehicle_id"),
    _about("person_phones", "phone_id"),
    _about("ties", "person_id", "vehicle_id"),
    _Watched("consents", _KEPT, _PLAN, (("phone_id", _OF_NUMBER),)),
    _about("texts", "phone_id", events=("INSERT",), when="NEW.kind = 'invite'"),
    _about("texts", "phone_id", events=("UPDATE",), when=_LEAVES_OTHERWISE),
    _about("alerts", "phone_id", when="{row}.phone_id IS NOT NULL"),
    _about("conversations", "phone_id"),
    _about("visits", "vehicle_id"),
    _about("work_done", "vehicle_id"),
    _about("recommendations", "vehicle_id"),
    _about("rests", "vehicle_id"),
    _about("recalls", "vehicle_id"),
    _about("booking_requests", "vehicle_id"),
    _about("set_invites", "phone_id", "vehicle_id"),
    _Watched(
        "set_seasons", ("UPDATE",), _PLAN, (("phone_id", "phone_id"), ("vehicle_id", "vehicle_id")),
        since="FROM set_invites WHERE season_id = {row}.id",
    ),
    _about("inspections", "vehicle_id", mark=_FORECAST),
    _about("work_done", "vehicle_id", mark=_FORECAST),
    _about("odometer_tellings", "vehicle_id", mark=_FORECAST),
    _about("visits", "vehicle_id", mark=_FORECAST),
)  # fmt: skip
# Every phone has a row by which it is looked at.
_FIRST_LOOK = (
    "INSERT INTO plan_looks (shop_id, phone_id, word, look_at, version) "
    "VALUES (NEW.shop_id, NEW.id, '', '1970-01-01 00:00:00', 0)"
)


def statements(dialect: str) -> list[str]:
    """What makes the triggers, for SQLite or PostgreSQL."""
    found = _trigger(dialect, "first_look_of_phones", "phones", "INSERT", "", _FIRST_LOOK)
    for one in WATCHED:
        for event in one.events:
            row = "OLD" if event == "DELETE" else "NEW"
            columns = ", ".join(("shop_id", *(column for column, _ in one.of)))
            values = ", ".join((f"{row}.shop_id", *(told.format(row=row) for _, told in one.of)))
            does = f"INSERT INTO {one.mark} ({columns}) SELECT {values} {one.since.format(row=row)}".strip()
            found += _trigger(dialect, f"{one.name}_{event.lower()}", one.table, event, one.when.format(row=row), does)
    return found


def _trigger(dialect: str, name: str, table: str, event: str, when: str, does: str) -> list[str]:
    condition = f"WHEN ({when}) " if when else ""
    if dialect == "sqlite":
        return [f"CREATE TRIGGER {name} AFTER {event} ON {table} {condition}BEGIN {does}; END"]
    return [
        f"CREATE OR REPLACE FUNCTION {name}() RETURNS trigger LANGUAGE plpgsql AS 'BEGIN {_quoted(does)}; "
        "RETURN NULL; END'",
        f"CREATE TRIGGER {name} AFTER {event} ON {table} FOR EACH ROW {condition}EXECUTE FUNCTION {name}()",
    ]


def _quoted(words: str) -> str:
    return words.replace("'", "''")


def make(target: Any, connection: Connection, tables: Iterable[Any] = (), **more: Any) -> None:
    """Make them once the tables were made; a listener, asked for all tables, of which none may be new."""
    if any(one.name == _PLAN for one in tables):
        for one in statements(connection.dialect.name):
            connection.exec_driver_sql(one)


def trigger_names() -> dict[str, str]:
    """The table of each trigger, by the trigger's name."""
    named = {f"{one.name}_{event.lower()}": one.table for one in WATCHED for event in one.events}
    return {"first_look_of_phones": "phones", **named}
