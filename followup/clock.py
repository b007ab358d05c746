"""What time it is: the only file that reads the clock.

`FOLLOWUP_CLOCK` may name a file that moves the clock for demonstrations and trials. It holds one line, read at each
call: an offset (`+21d`, `-3h`, `+1d12h30m`, `+90` seconds), with which time goes on, or a fixed instant
(`2026-12-15T09:00:00Z`), at which it stands still. Beside a provider that reaches real phones it is refused.
"""

from __future__ import annotations

import os
import re
import tempfile
from datetime import UTC, datetime, timedelta
from ipaddress import ip_address
from pathlib import Path
from urllib.parse import urlsplit

VARIABLE = "FOLLOWUP_CLOCK"
FURTHEST = timedelta(days=36_525)
_OFFSET = re.compile(r"([+-])(?=\d)(?:(\d+)d)?(?:(\d+)h)?(?:(\d+)m)?(?:(\d+)s?)?")


class ClockUnreadable(Exception):
    """The file that FOLLOWUP_CLOCK names holds neither an offset (+21d) nor an instant (2026-12-15T09:00:00Z)."""


class ClockNotMovable(Exception):
    """The clock can be moved only where FOLLOWUP_CLOCK names a file."""


class ClockRefused(Exception):
    """A moved clock is refused beside a provider that reaches real phones: unset FOLLOWUP_CLOCK."""


def now() -> datetime:
    """The present instant, aware, in UTC.

    Raises ClockUnreadable where FOLLOWUP_CLOCK names a file that is missing or holds something else.
    """
    file = _file()
    if file is None:
        return datetime.now(UTC)
    moved = _read(file)
    return datetime.now(UTC) + moved if isinstance(moved, timedelta) else moved


def is_moved() -> bool:
    """Whether `now` may differ from the real time."""
    file = _file()
    return file is not None and _read(file) != timedelta(0)


def can_be_moved() -> bool:
    """Whether FOLLOWUP_CLOCK names a file: only then can the clock be moved."""
    return _file() is not None


def move_to(instant: datetime) -> None:
    """Stops the clock at this aware instant; until moved again it stands there."""
    if instant.tzinfo is None:
        raise ValueError("An instant needs its time zone.")
    _write(instant.astimezone(UTC).isoformat().replace("+00:00", "Z"))


def move_by(delta: timedelta) -> None:
    """Moves the clock on; one that ticks goes on ticking, one that stands still stands still there."""
    file = _file()
    before = _read(file) if file is not None and file.exists() else timedelta(0)
    if isinstance(before, datetime):
        move_to(before + delta)
    else:
        _write(_offset_words(before + delta))


def check_clock_allowed(provider_address: str | None) -> None:
    """Raises ClockRefused where the clock could be moved while texts would reach real phones.

    `provider_address` is the address of the chosen provider; None where texts stay on this machine.
    """
    if _file() is not None and provider_address is not None and not is_loopback(provider_address):
        raise ClockRefused(ClockRefused.__doc__)


def is_loopback(address: str) -> bool:
    """Whether an address such as http://127.0.0.1:8080 stays on this machine."""
    host = urlsplit(address).hostname or ""
    try:
        return ip_address(host).is_loopback
    except ValueError:
        return host == "localhost"


def _file() -> Path | None:
    named = os.environ.get(VARIABLE)
    return Path(named) if named else None


def _read(file: Path) -> timedelta | datetime:
    try:
        line = file.read_text(encoding="utf-8").strip()
    except (OSError, UnicodeDecodeError) as error:
        raise ClockUnreadable(f"{file}: cannot be read. Write +0s into it for the real time.") from error
    try:
        return _parse(line)
    except (ValueError, OverflowError) as error:
        raise ClockUnreadable(f"{file}: {line[:40]!r}. {ClockUnreadable.__doc__}") from error


def _parse(line: str) -> timedelta | datetime:
    offset = _OFFSET.fullmatch(line)
    if offset:
        days, hours, minutes, seconds = (int(part or 0) for part in offset.groups()[1:])
        size = timedelta(days=days, hours=hours, minutes=minutes, seconds=seconds)
        if size > FURTHEST:
            raise ValueError(line)
        return -size if offset[1] == "-" else size
    if not line.endswith("Z"):
        raise ValueError(line)
    return datetime.fromisoformat(line).astimezone(UTC)


def _offset_words(delta: timedelta) -> str:
    """`+1d12h0m5s`; parts of a second are dropped."""
    seconds = int(delta.total_seconds())
    minutes, seconds_left = divmod(abs(seconds), 60)
    hours, minutes_left = divmod(minutes, 60)
    days, hours_left = divmod(hours, 24)
    return f"{'-' if seconds < 0 else '+'}{days}d{hours_left}h{minutes_left}m{seconds_left}s"


def _write(line: str) -> None:
    """Replaces the file in one step, so that another process never reads half a line."""
    file = _file()
    if file is None:
        raise ClockNotMovable(ClockNotMovable.__doc__)
    handle, name = tempfile.mkstemp(prefix=f".{file.name}.", dir=file.parent)
    with os.fdopen(handle, "w", encoding="utf-8") as written:
        written.write(line + "\n")
    Path(name).replace(file)


def let_run() -> None:
    """Lets a clock that stands still go on from where it stands."""
    file = _file()
    if file is None:
        raise ClockNotMovable(ClockNotMovable.__doc__)
    stands_at = _read(file)
    if isinstance(stands_at, datetime):
        _write(_offset_words(stands_at - datetime.now(UTC)))
