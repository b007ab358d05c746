"""Every window says why it is where it is, in plain sentences whose numbers are right."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import date, timedelta
from typing import Any, get_args

import pytest

from followup.core.forecast.due import forecast_cars
from followup.core.forecast.evidence import Apart, Wide
from followup.core.forecast.explain import APART_WORDS, explain, explain_in_full
from followup.core.forecast.window import DueWindow
from followup.core.items import ALL
from tests.core.forecast.told import history, pad, tread, visit, windows

MANY = [
    visit(f"{2021 + n}-06-10", 15_850 + 11_000 * n, tread(10 - 1.5 * n), tread(10 - 1.5 * n, "front_right"))
    for n in range(4)
]


def seen(*visits: dict[str, Any], **more: Any) -> dict[tuple[str, str], DueWindow]:
    """Windows with their evidence."""
    return windows(*visits, with_evidence=True, **more)


def full(window: DueWindow) -> str:
    """All of it in one text."""
    return " ".join(explain_in_full(window))


def test_the_numbers_in_the_sentence_are_those_of_the_model() -> None:
    one = seen(visit("2026-01-10", 60_000, tread(5)))["tire_tread", "front_left"]
    found = re.fullmatch(
        r"About (\d+)/32 now, wearing 1/32 every ([\d,]+) miles, driven about (\d+) miles a day\.", explain(one)
    )
    assert found, explain(one)
    now, every, daily = (int(text.replace(",", "")) for text in found.groups())
    assert one.because.wear_per_1000 is not None and one.because.distance_per_day is not None
    assert isinstance(one.now, float) and now == round(one.now)
    # One unit every 1,000 miles divided by the units worn in 1,000 miles, to the hundred.
    assert every == pytest.approx(1000 / one.because.wear_per_1000, abs=50)
    assert daily == round(one.because.distance_per_day)
    # Usual (0.21/32 a thousand miles for a front tire, 10,500 miles a year less some age): from the published priors.
    assert 3_500 < every < 6_500 and 24 <= daily <= 34


def test_brake_fluid_rises_by_the_year() -> None:
    water = {"item": "brake_fluid", "water_percent": 1.2, "changed_on": "2024-01-10"}
    one = seen(visit("2026-01-10", 60_000, water))["brake_fluid", ""]
    assert re.fullmatch(r"About 1\.\d % now, rising about 0\.\d % a year\.", explain(one))
    assert "miles a day" not in full(one)


@pytest.mark.parametrize(
    ("how", "visits"),
    [
        ("On the car since Jun 10, 2025, as the work says.", [visit("2025-06-10", 50_000, tread(3), work_done=[
            {"item": "tire_tread", "position": "front", "did": "replaced"}]), visit("2026-01-10", 56_000, tread(9))]),
        ("At this place since Jan 10, 2025, as the work says; before that it wore at another.", [
            visit("2025-01-10", 50_000, *(tread(5, f"{axle}_{side}") for axle in ("front", "rear")
                                          for side in ("left", "right")),
                  work_done=[{"item": "tire_rotation", "did": "rotated"}])]),
        ("Another part is seen by Jan 10, 2026: the reading had grown, and no work was told.", [
            visit("2025-01-10", 50_000, tread(4.5)), visit("2026-01-10", 60_000, tread(10))]),
        ("Taken for the car's first: the readings fit what was new then.", [
            visit("2021-01-10", 10_000, tread(8.2))]),
        ("Nobody told since when it is on.", [visit("2026-01-10", 90_000, tread(9))]),
    ],
)  # fmt: skip
def test_it_says_since_when_it_is_on_and_how_that_is_known(how: str, visits: list[dict[str, Any]]) -> None:
    assert how in full(seen(*visits)["tire_tread", "front_left"])


def test_it_says_whose_wear_it_is() -> None:
    once = seen(visit("2026-01-10", 60_000, pad(8)))["brake_pad", "front_left"]
    assert "One reading only: mostly what is usual for such cars." in full(once)
    often = seen(*MANY)["tire_tread", "front_left"]
    assert "Its own wear counts for most of this." in full(often)
    assert "read on 4 days" in full(often)


def test_it_says_what_the_distance_rests_on() -> None:
    one = seen(*MANY)["tire_tread", "front_left"]
    assert "from 48,850 mi on Jun 10, 2024 and 3 entries before it." in full(one)
    none = seen(visit("2025-01-10", None, tread(8)))["tire_tread", "front_left"]
    assert "no odometer was ever told, so this is what is usual at its age" in full(none)


def test_it_says_which_odometer_entries_were_put_right_or_left_out() -> None:
    kilometers = round(59_850 * 1.609344)
    one = seen(*MANY, visit("2025-06-10", kilometers, tread(5)))["tire_tread", "front_left"]
    assert f"{kilometers:,} on Jun 10, 2025 was taken for kilometers: 59,850 mi." in full(one)
    wrong = seen(*MANY[:3], visit("2024-03-10", 3_700, tread(5)), MANY[3])["tire_tread", "front_left"]
    assert "3,700 mi on Mar 10, 2024 was left out: it does not fit the other entries." in full(wrong)


def test_it_says_why_readings_do_not_count() -> None:
    one = seen(visit("2025-01-10", 50_000, tread(4.5)), visit("2026-01-10", 60_000, tread(10)))
    assert "1 reading does not count: a later reading shows another part." in full(one["tire_tread", "front_left"])
    assert set(APART_WORDS) == set(get_args(Apart))


def test_it_says_what_would_narrow_it() -> None:
    one = seen(visit("2026-01-10", 60_000, tread(8)))["tire_tread", "front_left"]
    assert one.evidence is not None
    said = {
        wide: explain_in_full(replace(one, evidence=replace(one.evidence, wide=wide)))[-1] for wide in get_args(Wide)
    }
    assert len(set(said.values())) == len(said)
    assert said["distance"] == "An odometer reading would narrow this most."
    assert said["rate"] == "One more measurement would narrow this most."
    narrow = replace(one, early=date(2026, 5, 1), likely=date(2026, 5, 20), late=date(2026, 6, 10))
    assert "narrow" not in full(narrow)


def test_a_rule_needs_no_excuse_for_its_width() -> None:
    code = {"item": "tire_age", "position": "spare", "date_code": "2624"}
    one = seen(visit("2026-01-10", 60_000, code))["tire_age", "spare"]
    assert one.early is not None and one.late is not None and (one.late - one.early).days > 60
    assert "narrow" not in full(one)


def test_an_odometer_reading_narrows_what_is_wide_because_of_the_distance() -> None:
    """The sentence is true: with one odometer entry the miles a day are better known than with none."""
    flat = [visit(f"{2021 + n}-06-10", None, tread(10 - n), tread(10 - n, "front_right")) for n in range(4)]
    one = seen(*flat)["tire_tread", "front_left"]
    assert one.evidence is not None and one.evidence.miles_a_day_between is not None
    oil = {"item": "washer_fluid", "level": "ok"}
    told = seen(*flat[:-1], visit("2024-06-10", 48_850, tread(7), tread(7, "front_right"), oil))
    then = told["tire_tread", "front_left"].evidence
    assert then is not None and then.miles_a_day_between is not None
    before, after = (high / low for low, high in (one.evidence.miles_a_day_between, then.miles_a_day_between))
    assert after < before


def test_tires_off_the_car_say_so() -> None:
    winter = [visit("2026-01-10", 60_000, tread(9), tire_set="winter")]
    assert "Winter tires: off the car in this season; they do not wear before about Nov" in full(
        seen(*winter, as_of="2026-07-01")["tire_tread", "front_left"]
    )
    assert "Winter tires: they come off around" in full(seen(*winter)["tire_tread", "front_left"])
    both = [*winter, visit("2026-05-10", 64_000, tread(8), tire_set="summer")]
    stored = forecast_cars([history(*both)], "last", with_stored_sets=True, with_evidence=True)[-1]
    assert "These are the winter tires, which were not on the car" in full(stored)


def test_what_was_found_due_says_what_was_found() -> None:
    worn = seen(visit("2026-01-10", 60_000, tread(3)))["tire_tread", "front_left"]
    assert explain(worn) == "3/32 on Jan 10, 2026, recommended at 4/32."
    blades = seen(visit("2026-01-10", 60_000, {"item": "wiper_blade", "position": "front", "looks": "streaks"}))
    assert explain(blades["wiper_blade", "front"]) == "Streaks on Jan 10, 2026: due now."


@pytest.mark.parametrize(
    ("reading", "said"),
    [
        ({"item": "washer_fluid", "level": "ok"}, "Ok when last looked at; from there it goes down at the usual pace."),
        ({"item": "oil_service", "done_on": "2025-12-10", "done_odometer": 59_000},
         "Every 9 months or 7,500 miles, whichever comes first; last done Dec 10, 2025, driven about 25 miles a day."),
        ({"item": "oil_service", "life_percent": 60}, "; the display said 60 % left on Jan 10, 2026."),
        ({"item": "oil_service", "due_odometer": 65_000}, "; the sticker says due at 65,000 mi."),
        ({"item": "battery", "verdict": "good", "changed_on": "2023-01-10"},
         "Usually lasts about 4.5 years (8 of 10 between 2.9 years and 7 years); this one is on since Jan 10, 2023,"),
        ({"item": "battery", "verdict": "good"}, "; nobody knows since when this one is on."),
        ({"item": "cabin_filter", "looks": "even", "changed_on": "2025-07-10"}, "or 15,000 miles"),
        ({"item": "inspection_sticker", "good_until": "2026-08"}, "The date is the one written on it: Aug 2026."),
        ({"item": "parking_brake_shoe", "position": "rear_left", "looks": "even"},
         "Even on Jan 10, 2026: judged by its looks alone, so there is no date; it is looked at again at the next"),
        ({"item": "tire_age", "position": "spare", "date_code": "0821"}, "Looked at from 6 years on, by rule"),
    ],
)  # fmt: skip
def test_every_kind_of_model_explains_itself(reading: dict[str, Any], said: str) -> None:
    found = next(iter(seen(visit("2026-01-10", 60_000, reading)).values()))
    assert said in explain(found), explain(found)


def test_a_window_without_its_evidence_explains_itself_too() -> None:
    for one in windows(*MANY).values():
        old = DueWindow.from_json({name: value for name, value in one.to_json().items() if name != "evidence"})
        said = explain_in_full(old)
        assert said[0].startswith("About ") and said[1].startswith("Read on 4 days. ")


def test_every_item_of_the_catalogue_has_an_explanation() -> None:
    """Each forecast item with each of its fields filled in turn; words for staff without holes."""
    from tests.core.forecast.test_any_history import car_of_every_item

    found = forecast_cars([car_of_every_item()], "last", with_evidence=True)
    assert {one.item for one in found} == {item.code for item in ALL if item.is_forecast}
    for one in found:
        for line in explain_in_full(one):
            assert line.endswith(".") and line[0].isupper() | line[0].isdigit(), line
            assert not set("{}_") & set(line) and "None" not in line and "nan" not in line, line
            assert len(line) <= 230, line
    assert date(2026, 1, 10) - timedelta(days=1) < found[0].as_of
