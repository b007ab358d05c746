"""How fast a number may send: when it is free again, the same for every process that sends from it.

Real time, by the database's own clock: a carrier counts segments by its own, whatever a trial's clock says. A number is
free again when the segments of its last text have gone by, so that no sliding second holds more than its rate, but for
one text that alone is longer than that.
"""

from __future__ import annotations

import math
from datetime import timedelta

from sqlalchemy import Connection, or_, select
from sqlalchemy.dialects import postgresql, sqlite

from followup.storage import machine, rows, tables

# A little slower than allowed: from the commit to the provider not every text takes equally long.
SLOWER_BY = 1.05
# A little longer than one, for the same reason.
A_SECOND = 1.02
# A database whose clock was set back must not silence a number.
LONGEST_WAIT = timedelta(minutes=5)
_PACES = tables.paces.c
_FREE_AT = select(_PACES.free_at).where(_PACES.shop_id == rows.given("shop_id"), _PACES.number == rows.given("number"))
_IS_FREE = or_(_PACES.free_at <= rows.given("free_until"), _PACES.free_at > rows.given("never_after"))
_TAKE = {
    name: (first := dialect.insert(tables.paces))
    .on_conflict_do_update(
        index_elements=["shop_id", "number"], set_={"free_at": first.excluded.free_at}, where=_IS_FREE
    )
    .returning(_PACES.number)
    for name, dialect in (("sqlite", sqlite), ("postgresql", postgresql))
}


def apart_by(segments: int, segments_per_second: float) -> timedelta:
    """How long after the segments before it went by so many may leave, so that no second holds more than the rate.

    In the second before that instant at most the whole segments left for which there was time since; the fewer of
    them may still be in it, the later it is. What alone is longer than a second's rate leaves when none is in it.
    """
    fewer = max(math.floor(segments_per_second - segments) + 1, 1)
    return max(timedelta(0), timedelta(seconds=A_SECOND - fewer * SLOWER_BY / segments_per_second))


def free_in(
    connection: Connection, shop_id: int, number: str, segments: int = 1, segments_per_second: float = 1.0
) -> float:
    """In how many seconds the number may send so many segments; 0.0 where it may now."""
    now = machine.database_clock(connection)
    found = rows.first(connection, _FREE_AT, shop_id=shop_id, number=number)
    left = found["free_at"] + apart_by(segments, segments_per_second) - now if found else timedelta(0)
    return left.total_seconds() if timedelta(0) < left <= LONGEST_WAIT else 0.0


def take(connection: Connection, shop_id: int, number: str, segments: int, segments_per_second: float) -> bool:
    """Take the time of so many segments, in the transaction that lets the text leave; False where another process was
    first and the number is not free."""
    now = machine.database_clock(connection)
    asked = {
        "shop_id": shop_id,
        "number": number,
        "free_at": now + timedelta(seconds=segments / segments_per_second * SLOWER_BY),
        "free_until": now - apart_by(segments, segments_per_second),
        "never_after": now + LONGEST_WAIT,
    }
    return connection.execute(_TAKE[connection.dialect.name], asked).first() is not None
