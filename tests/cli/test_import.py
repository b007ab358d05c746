"""`followup import` against its contract, on a database of its own."""

import csv
import json
import stat
from pathlib import Path
from typing import Any

import pytest
from click.testing import CliRunner, Result

from followup.cli.import_file import import_file
from followup.core.inspection_csv import csv_columns
from followup.storage import tables
from followup.storage.store import Store, make_engine
from tests.core.lines import line_told
from tests.shop_of_tests import add_shop

DEMO = Path("demo_data/inspections.jsonl")
# Ten ways for a line to be bad, each with the field that it must be told by.
BAD: list[tuple[dict[str, Any], str]] = [
    ({"readings": [{"item": "tire_treat", "position": "front_left", "unit": "32nds", "value": 5}]}, "readings.0.item"),
    ({"readings": [{"item": "tire_tread", "position": "spare", "unit": "32nds", "value": 9}]}, "readings.0.position"),
    ({"readings": [{"item": "tire_tread", "position": "front", "unit": "32nds", "value": 30}]}, "readings.0.value"),
    ({"readings": [{"item": "tire_age", "position": "front_left", "date_code": "5421"}]}, "readings.0.date_code"),
    ({"inspected_at": "2031-01-01T09:00"}, "inspected_at"),
    ({"readings": [{"item": "brake_pad", "position": "front_left", "life_percent": 40}]}, "readings.0.life_percent"),
    ({"odometer": 41_000}, "unit"),
    ({"customer": {"id": "C-1", "phone": "555-0147"}}, "customer.phone"),
    ({"readings": []}, "readings"),
    ({"work_done": [{"item": "brake_fluid", "did": "topped_off"}]}, "work_done.0.did"),
]  # fmt: skip


@pytest.fixture
def store(sqlite_url: str, monkeypatch: pytest.MonkeyPatch) -> Store:
    """One shop; the command finds its database by the settings."""
    monkeypatch.setenv("FOLLOWUP_DATABASE_URL", sqlite_url)
    monkeypatch.setenv("FOLLOWUP_SECRET_KEY", "only-for-tests-0123456789abcdef")
    monkeypatch.setenv("FOLLOWUP_LEDGER_HASH_KEY", "only-for-tests-0123456789abcdef")
    made = Store(make_engine(sqlite_url))
    add_shop(made)
    return made


def run(*typed: object) -> Result:
    """The command as typed."""
    return CliRunner().invoke(import_file, [str(one) for one in typed])


def last(result: Result) -> dict[str, int]:
    """The last line on standard output."""
    told: dict[str, int] = json.loads(result.stdout.splitlines()[-1])
    return told


def tally(read: int, kept: int, unchanged: int, rejected: int) -> dict[str, int]:
    """That line as it should be."""
    return {"read": read, "kept": kept, "unchanged": unchanged, "rejected": rejected}


def good(number: int) -> dict[str, Any]:
    """A good line, each of a car of its own."""
    names = {"inspection": f"I-{number}", "customer": {"id": f"C-{number}"}, "vehicle": {"id": f"V-{number}"}}
    return line_told(**names)


def write(file: Path, lines: list[dict[str, Any]]) -> Path:
    """A file of these lines."""
    file.write_text("".join(json.dumps(line) + "\n" for line in lines), encoding="utf-8")
    return file


def with_ten_bad(folder: Path) -> Path:
    """A hundred lines; every tenth is bad in its own way."""
    lines = [good(number) for number in range(100)]
    for place, (changes, _) in enumerate(BAD):
        lines[place * 10 + 4] |= changes
    return write(folder / "hundred.jsonl", lines)


def test_ten_bad_lines_among_a_hundred_are_explained_and_kept_for_another_try(store: Store, tmp_path: Path) -> None:
    file = with_ten_bad(tmp_path)
    result = run(file)
    assert last(result) == tally(100, 90, 0, 10)
    assert result.exit_code == 1
    for place, (_, field) in enumerate(BAD):
        assert f"line {place * 10 + 5}: {field}" in result.stderr
    kept = tmp_path / "hundred.jsonl.rejected.jsonl"
    assert stat.S_IMODE(kept.stat().st_mode) == 0o600
    wrapped = [json.loads(line) for line in kept.read_text(encoding="utf-8").splitlines()]
    assert [one["rejected"]["line"] for one in wrapped] == [5 + 10 * place for place in range(10)]
    assert all(one["rejected"]["faults"][0]["says"] for one in wrapped)
    assert [one["given"]["customer"] for one in wrapped if one["rejected"]["line"] == 5] == [{"id": "C-4"}]


def test_what_was_rejected_can_be_corrected_and_fed_again(store: Store, tmp_path: Path) -> None:
    run(with_ten_bad(tmp_path))
    kept = tmp_path / "hundred.jsonl.rejected.jsonl"
    again = run(kept)
    assert last(again) == tally(10, 0, 0, 10)
    wrapped = [json.loads(line) for line in kept.read_text(encoding="utf-8").splitlines()]
    for one in wrapped:
        one["given"] = good((one["rejected"]["line"]) - 1)
    assert last(run(write(kept, wrapped))) == tally(10, 10, 0, 0)
    assert last(run(write(tmp_path / "all.jsonl", [good(number) for number in range(100)]))) == tally(100, 0, 100, 0)


@pytest.mark.parametrize(
    "bad", [b"{not json", b'{"inspection": "I-1", "inspection": "I-2"}', b"[1, 2]", b'{"inspection": "J\xf6rg"}']
)
def test_a_line_that_is_no_object_of_json_is_kept_as_it_stood(store: Store, tmp_path: Path, bad: bytes) -> None:
    file = tmp_path / "broken.jsonl"
    file.write_bytes(b"\xef\xbb\xbf" + json.dumps(good(1)).encode() + b"\r\n\r\n" + bad + b"\n")
    result = run(file)
    assert last(result) == tally(2, 1, 0, 1)
    assert "line 3: " in result.stderr
    wrapped = json.loads((tmp_path / "broken.jsonl.rejected.jsonl").read_text(encoding="utf-8"))
    assert wrapped["given"] == (json.loads(bad) if bad == b"[1, 2]" else bad.decode("utf-8", "backslashreplace"))


def test_the_demo_twice_changes_nothing_and_each_car_has_its_windows(store: Store, tmp_path: Path) -> None:
    file = tmp_path / DEMO.name
    file.write_bytes(DEMO.read_bytes())
    lines = sum(bool(line.strip()) for line in DEMO.read_text(encoding="utf-8").splitlines())
    first = run(file)
    assert (last(first)["rejected"], last(first)["read"]) == (0, lines), first.stderr
    before = contents_of(store)
    assert len({row[2] for row in before["due_windows"]}) == len(before["vehicles"])
    second = run(file)
    assert last(second) == tally(lines, 0, lines, 0)
    assert second.exit_code == 0
    assert contents_of(store) == before


def contents_of(store: Store) -> dict[str, list[tuple[Any, ...]]]:
    """Every row of every table."""
    with store.read() as connection:
        return {table.name: sorted(map(tuple, connection.execute(table.select())), key=repr) for table in TABLES}


TABLES = tables.metadata.sorted_tables


def test_a_check_keeps_nothing_and_says_the_same(store: Store, tmp_path: Path) -> None:
    file = with_ten_bad(tmp_path)
    before = contents_of(store)
    result = run(file, "--check")
    assert last(result) == tally(100, 90, 0, 10)
    assert contents_of(store) == before
    assert list(tmp_path.glob("*.rejected.jsonl")) == []


def test_what_is_doubtful_goes_in_only_when_somebody_said_so(store: Store, tmp_path: Path) -> None:
    earlier = good(1) | {"odometer": 50_000, "unit": "mi"}
    later = earlier | {"inspection": "I-2", "inspected_at": "2026-04-02T09:10", "odometer": 5_000}
    file = write(tmp_path / "doubtful.jsonl", [earlier, later])
    result = run(file)
    assert last(result) == tally(2, 1, 0, 1)
    wrapped = json.loads((tmp_path / "doubtful.jsonl.rejected.jsonl").read_text(encoding="utf-8"))
    assert wrapped["rejected"]["doubts"][0]["field"] == "odometer"
    assert last(run(file, "--accept-doubtful")) == tally(2, 1, 1, 0)


def test_csv_says_the_same_as_json_lines(store: Store, tmp_path: Path) -> None:
    template = run("--template")
    assert next(csv.reader([template.stdout])) == list(csv_columns())
    told = {
        "inspection": "I-1", "inspected_at": "2026-03-02T09:10", "customer.id": "C-1", "vehicle.id": "V-1",
        "item": "washer_fluid", "level": "low",
    }  # fmt: skip
    file = tmp_path / "sheet.csv"
    file.write_text(f"{','.join(told)}\n{','.join(told.values())}\n", encoding="utf-8")
    assert last(run(file)) == tally(1, 1, 0, 0)
    same = write(tmp_path / "same.jsonl", [line_told()])
    assert last(run(same)) == tally(1, 0, 1, 0)


def test_wrong_use_is_told_with_exit_2(store: Store, tmp_path: Path) -> None:
    file = write(tmp_path / "one.jsonl", [good(1)])
    latin = tmp_path / "latin.csv"
    latin.write_bytes("inspection,customer.name\nI-1,Jörg\n".encode("latin-1"))
    assert run().exit_code == run(file, "--shop", "nowhere").exit_code == run(latin).exit_code == 2
    assert run(tmp_path / "missing.jsonl").exit_code == 2
