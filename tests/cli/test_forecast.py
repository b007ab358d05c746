"""`followup forecast` against its contract."""

import json
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from click.testing import CliRunner, Result

from followup.cli.forecast import forecast
from followup.rehearsal.fleet.build import build_fleet
from followup.rehearsal.fleet.habits import DIFFERING
from tests.core.forecast.told import pad, tread, visit

KEYS = [
    "vehicle",
    "item",
    "position",
    "as_of",
    "limit",
    "now",
    "due",
    "chance_due_within_days",
    "beyond_horizon",
    "because",
]


def told(**changes: Any) -> str:
    """One line of a file."""
    return json.dumps({"customer": {"id": "C-1"}} | visit("2026-01-10", 60_000, tread(6)) | changes)


def run(tmp_path: Path, lines: list[str], *options: str) -> tuple[list[dict[str, Any]], Result]:
    """The answers and how it ended."""
    file = tmp_path / "inspections.jsonl"
    file.write_text("\n".join(lines) + "\n", encoding="utf-8")
    ended = CliRunner().invoke(forecast, ["--inspections", str(file), *options])
    return [json.loads(line) for line in ended.stdout.splitlines()], ended


def test_one_line_an_item_with_the_keys_of_the_contract(tmp_path: Path) -> None:
    answers, ended = run(tmp_path, [told()], "--as-of", "2026-01-10")
    assert ended.exit_code == 0
    (answer,) = answers
    assert list(answer) == KEYS
    assert answer["vehicle"] == "V-1"
    assert (answer["item"], answer["position"], answer["as_of"]) == ("tire_tread", "front_left", "2026-01-10")
    assert answer["limit"] == {"value": 4, "unit": "32nds", "kind": "action"}
    assert list(answer["due"]) == ["early", "likely", "late"]
    assert list(answer["chance_due_within_days"]) == ["30", "90", "180", "365"]
    assert list(answer["because"]) == ["wear_per_1000", "unit", "distance_per_day", "readings_used", "since", "model"]
    assert answer["because"]["unit"] == "32nds per 1000 mi"
    days = [date.fromisoformat(day) for day in answer["due"].values()]
    assert days == sorted(days)


def test_quantiles_keep_their_keys_as_typed(tmp_path: Path) -> None:
    answers, _ = run(tmp_path, [told()], "--as-of", "last", "--quantiles", "0.10,0.5,.9,0.90")
    answer = answers[0]
    assert list(answer["quantiles"]) == ["0.10", "0.5", ".9", "0.90"]
    for key, point in (("0.10", "early"), ("0.5", "likely"), (".9", "late")):
        passed = (date.fromisoformat(answer["due"][point]) - date(2026, 1, 10)).days
        assert answer["quantiles"][key] == pytest.approx(passed, abs=0.51)


def test_past_the_horizon_is_null(tmp_path: Path) -> None:
    answers, _ = run(tmp_path, [told()], "--as-of", "last", "--horizon-days", "30", "--quantiles", "0.001,0.5")
    assert answers[0]["due"] == {"early": None, "likely": None, "late": None}
    assert answers[0]["quantiles"]["0.5"] is None
    assert answers[0]["beyond_horizon"] > 0.9


def test_last_is_each_cars_own_latest_inspection(tmp_path: Path) -> None:
    other = told(inspection="I-2", inspected_at="2025-06-01T10:00", vehicle={"id": "V-2"})
    answers, _ = run(tmp_path, [told(), other], "--as-of", "last")
    assert [(one["vehicle"], one["as_of"]) for one in answers] == [("V-1", "2026-01-10"), ("V-2", "2025-06-01")]


def test_cars_by_their_first_line_items_by_the_catalogue(tmp_path: Path) -> None:
    mixed = [pad(8), tread(6, "rear_left"), tread(6, "front_right"), tread(6), {"item": "washer_fluid", "level": "ok"}]
    lines = [told(inspection="I-9", vehicle={"id": "V-9"}), told(readings=mixed)]
    answers, _ = run(tmp_path, lines, "--as-of", "last")
    assert [(one["vehicle"], one["item"], one["position"]) for one in answers] == [
        ("V-9", "tire_tread", "front_left"),
        ("V-1", "tire_tread", "front_left"),
        ("V-1", "tire_tread", "rear_left"),
        ("V-1", "tire_tread", "front_right"),
        ("V-1", "brake_pad", "front_left"),
        ("V-1", "washer_fluid", ""),
    ]


def test_nothing_later_than_as_of_is_looked_at(tmp_path: Path) -> None:
    later = told(inspection="I-2", inspected_at="2026-06-01T10:00", readings=[tread(3)], odometer=66_000)
    alone, _ = run(tmp_path, [told()], "--as-of", "2026-02-01")
    both, _ = run(tmp_path, [told(), later], "--as-of", "2026-02-01")
    assert alone == both
    assert run(tmp_path, [told()], "--as-of", "2025-01-01")[0] == []


def test_bad_lines_are_told_and_the_others_answered(tmp_path: Path) -> None:
    bad = told(inspection="I-2", readings=[tread(30)])
    answers, ended = run(tmp_path, [told(), bad, "{", told(inspection="I-3", vehicle={"id": "V-3"})], "--as-of", "last")
    assert ended.exit_code == 1
    assert [one["vehicle"] for one in answers] == ["V-1", "V-3"]
    assert "line 2: " in ended.stderr
    assert "line 3: " in ended.stderr


def test_an_item_past_its_limit_is_due_on_as_of(tmp_path: Path) -> None:
    answers, _ = run(tmp_path, [told(readings=[tread(3)])], "--as-of", "2026-03-01")
    assert set(answers[0]["due"].values()) == {"2026-03-01"}
    assert answers[0]["chance_due_within_days"]["30"] == 1.0


def test_legal_limit(tmp_path: Path) -> None:
    action, _ = run(tmp_path, [told()], "--as-of", "last")
    legal, _ = run(tmp_path, [told()], "--as-of", "last", "--limit", "legal")
    assert legal[0]["limit"] == {"value": 2, "unit": "32nds", "kind": "legal"}
    assert legal[0]["due"]["likely"] > action[0]["due"]["likely"]


def test_words_for_levels_and_looks(tmp_path: Path) -> None:
    readings = [
        {"item": "washer_fluid", "level": "low"},
        {"item": "wiper_blade", "position": "front", "looks": "streaks"},
    ]
    answers, _ = run(tmp_path, [told(readings=readings)], "--as-of", "last")
    assert [one["now"] for one in answers] == ["low", "streaks"]
    assert all(set(one["due"].values()) == {"2026-01-10"} for one in answers)


@pytest.mark.parametrize(
    "options",
    [("--as-of", "yesterday"), ("--as-of", "last", "--quantiles", "1.5"), ("--as-of", "last", "--quantiles", "a"),
     ("--as-of", "last", "--horizon-days", "0"), ("--as-of", "last", "--limit", "moral"), ()],
)  # fmt: skip
def test_wrong_use_exits_2(tmp_path: Path, options: tuple[str, ...]) -> None:
    assert run(tmp_path, [told()], *options)[1].exit_code == 2


def test_csv_gives_the_same_answers(tmp_path: Path) -> None:
    rows = [
        "inspection,inspected_at,odometer,odometer_unit,customer.id,vehicle.id,vehicle.class,vehicle.driven,"
        "vehicle.first_used_on,item,position,unit,value",
        "I-2026-01-10,2026-01-10T09:00,60000,mi,C-1,V-1,car,front,2020-01-01,tire_tread,front_left,32nds,6",
    ]
    file = tmp_path / "inspections.csv"
    file.write_text("\n".join(rows) + "\n", encoding="utf-8")
    ended = CliRunner().invoke(forecast, ["--inspections", str(file), "--as-of", "last"])
    assert ended.exit_code == 0, ended.stderr
    assert [json.loads(line) for line in ended.stdout.splitlines()] == run(tmp_path, [told()], "--as-of", "last")[0]


@pytest.fixture(scope="module")
def differing_shop(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A file of a shop where treads wear 1.4 times, pads 0.7 times as fast as is usual."""
    file = tmp_path_factory.mktemp("shop") / "before.jsonl"
    lines = build_fleet(DIFFERING, 80, 4201).lines
    file.write_text("".join(f"{json.dumps(line)}\n" for line in lines), encoding="utf-8")
    return file


def test_a_shops_own_priors_are_learned_from_a_file_and_told(tmp_path: Path, differing_shop: Path) -> None:
    line = told(readings=[tread(9)])
    (usual,), _ = run(tmp_path, [line], "--as-of", "last")
    (learned,), ended = run(tmp_path, [line], "--as-of", "last", "--learn", str(differing_shop))
    assert ended.exit_code == 0, ended.stderr
    assert learned["due"]["likely"] < usual["due"]["likely"]
    assert "learning" in ended.stderr
    assert "Tire tread: front wears about" in ended.stderr


def test_nothing_is_learned_from_what_stands_later_than_the_day(tmp_path: Path, differing_shop: Path) -> None:
    line = told(readings=[tread(9)])
    usual, _ = run(tmp_path, [line], "--as-of", "2026-01-10")
    later = tmp_path / "later.jsonl"
    later.write_text(differing_shop.read_text().replace('"inspected_at": "20', '"inspected_at": "21'), encoding="utf-8")
    learned, ended = run(tmp_path, [line], "--as-of", "2026-01-10", "--learn", str(later))
    assert learned == usual
    assert "Nothing can be learned" in ended.stderr


def test_too_few_cars_to_learn_from_are_told_and_the_published_answer(tmp_path: Path) -> None:
    before = tmp_path / "before.jsonl"
    before.write_text(told() + "\nno line\n", encoding="utf-8")
    learned, ended = run(tmp_path, [told()], "--as-of", "last", "--learn", str(before))
    assert learned == run(tmp_path, [told()], "--as-of", "last")[0]
    assert "12 are needed" in ended.stderr
    assert "line 2:" in ended.stderr
    assert ended.exit_code == 1


def test_every_forecast_item_of_the_catalogue_answers(tmp_path: Path) -> None:
    """Walks the catalogue: an item that is forgotten by the forecast, or crashes it, is told by this test."""
    from followup.core.items import ALL

    readings = []
    for item in (one for one in ALL if one.is_forecast):
        for field in item.fields:
            sample = _sample(field)
            if sample is not None:
                units = {"unit": field.units[0]} if field.kind in ("number", "numbers") and field.units else {}
                readings.append({"item": item.code, "position": item.positions[0], field.name: sample, **units})
                break
    lines = [told(readings=readings, vehicle={"id": "V-1", "powertrain": "diesel"})]
    answers, ended = run(tmp_path, lines, "--as-of", "last")
    assert ended.exit_code == 0, ended.stderr
    expected = [one.code for one in ALL if one.is_forecast and one.code in {told["item"] for told in readings}]
    assert [one["item"] for one in answers] == expected
    assert len(expected) == sum(one.is_forecast for one in ALL)


def _sample(field: Any) -> Any:
    """Something that may be entered in that field."""
    match field.kind:
        case "number":
            return (field.least or 0) + 0.5 * ((field.most or 100) - (field.least or 0))
        case "numbers":
            return [8, 8, 7]
        case "choice":
            return field.choices[0]
        case "date":
            return "2025-06-01"
        case "date_code":
            return "0821"
        case "month":
            return "2026-09"
    return None
