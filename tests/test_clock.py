"""The clock: real where nothing moves it, moved by a file that is read at each call, refused beside real phones."""

from datetime import UTC, datetime, timedelta, timezone
from pathlib import Path

import pytest
import time_machine
from hypothesis import given
from hypothesis import strategies as some

from followup import clock

NOON = datetime(2026, 11, 24, 12, 0, tzinfo=UTC)


@pytest.fixture
def file(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    moved = tmp_path / "clock"
    monkeypatch.setenv(clock.VARIABLE, str(moved))
    return moved


@pytest.fixture(autouse=True)
def at_noon(monkeypatch: pytest.MonkeyPatch) -> object:
    monkeypatch.delenv(clock.VARIABLE, raising=False)
    with time_machine.travel(NOON, tick=False):
        yield


def test_without_a_file_it_is_the_real_time() -> None:
    assert clock.now() == NOON
    assert clock.now().utcoffset() == timedelta(0)
    assert not clock.is_moved()


@pytest.mark.parametrize(
    ("line", "expected"),
    [
        ("+21d", NOON + timedelta(days=21)),
        ("-3h", NOON - timedelta(hours=3)),
        ("+90", NOON + timedelta(seconds=90)),
        ("+90s", NOON + timedelta(seconds=90)),
        ("+1d12h30m5s\n", NOON + timedelta(days=1, hours=12, minutes=30, seconds=5)),
        ("2026-12-15T09:00:00Z\n", datetime(2026, 12, 15, 9, 0, tzinfo=UTC)),
        ("2026-12-15T09:00:00.25Z", datetime(2026, 12, 15, 9, 0, 0, 250_000, tzinfo=UTC)),
    ],
)
def test_the_file_moves_it(file: Path, line: str, expected: datetime) -> None:
    file.write_text(line)
    assert clock.now() == expected
    assert clock.is_moved()


def test_the_file_is_read_at_each_call(file: Path) -> None:
    file.write_text("+0s")
    assert (clock.now(), clock.is_moved()) == (NOON, False)
    file.write_text("+1h")
    assert (clock.now(), clock.is_moved()) == (NOON + timedelta(hours=1), True)


@pytest.mark.parametrize(
    "line",
    [
        *("", "21d", "+", "+d", "+1h2d", "+1.5h", "+-1", "1e3", "\x00", "+1h\n+2h", "+9999999d", "+" + "9" * 400),
        *("tomorrow", "2026-12-15", "2026-12-15T09:00:00", "2026-12-15T09:00:00+01:00", "2026-13-01T00:00:00Z"),
    ],
)
def test_anything_else_is_refused_in_words(file: Path, line: str) -> None:
    file.write_text(line)
    with pytest.raises(clock.ClockUnreadable, match="neither an offset"):
        clock.now()


def test_a_missing_or_binary_file_is_refused_in_words(file: Path) -> None:
    with pytest.raises(clock.ClockUnreadable, match="cannot be read"):
        clock.now()
    file.write_bytes(b"\xff\xfe\x00")
    with pytest.raises(clock.ClockUnreadable, match="cannot be read"):
        clock.now()


def test_moving_by_a_while_goes_on_ticking(file: Path) -> None:
    clock.move_by(timedelta(days=21))
    clock.move_by(timedelta(hours=-1))
    assert clock.now() == NOON + timedelta(days=20, hours=23)
    with time_machine.travel(NOON + timedelta(minutes=5), tick=False):
        assert clock.now() == NOON + timedelta(days=20, hours=23, minutes=5)


def test_moving_to_an_instant_stands_still_there(file: Path) -> None:
    there = datetime(2026, 12, 15, 10, 30, tzinfo=timezone(timedelta(hours=-6)))
    clock.move_to(there)
    assert file.read_text() == "2026-12-15T16:30:00Z\n"
    with time_machine.travel(NOON + timedelta(days=5), tick=False):
        assert clock.now() == there
    clock.move_by(timedelta(days=1))
    assert clock.now() == there + timedelta(days=1)
    assert [one.name for one in file.parent.iterdir()] == ["clock"]


@given(moved=some.timedeltas(min_value=timedelta(days=-9000), max_value=timedelta(days=9000)))
def test_what_is_written_is_read_again(tmp_path_factory: pytest.TempPathFactory, moved: timedelta) -> None:
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv(clock.VARIABLE, str(tmp_path_factory.mktemp("clock") / "clock"))
        clock.move_by(moved)
        assert abs(clock.now() - (NOON + moved)) < timedelta(seconds=1)


def test_moving_needs_a_file_and_a_zone(file: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    with pytest.raises(ValueError, match="time zone"):
        clock.move_to(NOON.replace(tzinfo=None))
    monkeypatch.delenv(clock.VARIABLE)
    with pytest.raises(clock.ClockNotMovable):
        clock.move_by(timedelta(days=1))


@pytest.mark.parametrize(
    "address", ["https://api.twilio.com", "http://10.0.0.1", "http://127.0.0.1.example.com", "nowhere"]
)
def test_a_movable_clock_is_refused_beside_real_phones(
    file: Path, monkeypatch: pytest.MonkeyPatch, address: str
) -> None:
    with pytest.raises(clock.ClockRefused):
        clock.check_clock_allowed(address)
    monkeypatch.delenv(clock.VARIABLE)
    clock.check_clock_allowed(address)


@pytest.mark.parametrize(
    "address", [None, "http://127.0.0.1:8080", "http://localhost", "http://[::1]:1", "http://127.9.9.9"]
)
def test_it_is_allowed_where_texts_stay_on_this_machine(file: Path, address: str | None) -> None:
    clock.check_clock_allowed(address)
