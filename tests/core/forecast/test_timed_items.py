"""Items without measured wear, through the inspection contract: levels, lives, intervals, looks, dates."""

from datetime import date, timedelta

import pytest

from tests.core.forecast.told import visit, window, windows

DAY = date(2026, 1, 10)


def test_low_is_due_now_and_a_top_off_fills_it() -> None:
    low = {"item": "washer_fluid", "level": "low"}
    assert window(visit("2026-01-10", 60_000, low)).is_past
    filled = window(visit("2026-01-10", 60_000, low, work_done=[{"item": "washer_fluid", "did": "topped_off"}]))
    assert not filled.is_past
    assert filled.now == "full"
    assert filled.because.since_on == DAY


def test_washer_fluid_goes_faster_in_winter() -> None:
    """70 days from ok to low, 40 of winter (common practice): in days that are all winter, or all summer."""
    ok = {"item": "washer_fluid", "level": "ok"}
    winter = window(visit("2025-11-15", 60_000, ok))
    summer = window(visit("2026-04-15", 60_000, ok))
    assert winter.likely == date(2025, 11, 15) + timedelta(days=40)
    assert summer.likely == date(2026, 4, 15) + timedelta(days=70)


def test_engine_oil_goes_by_miles() -> None:
    ok = {"item": "engine_oil", "level": "ok"}
    one = window(visit("2024-01-10", 50_000, ok), visit("2025-01-10", 60_000, ok), visit("2026-01-10", 70_000, ok))
    # Half a quart left at a quart every 4,000 miles: 2,000 miles at some 27 a day.
    assert one.likely is not None
    assert (one.likely - DAY).days == pytest.approx(2_000 / 27.4, rel=0.15)


def test_a_level_that_cannot_be_read_has_no_date() -> None:
    one = window(visit("2026-01-10", 60_000, {"item": "engine_oil", "level": "not_readable"}))
    assert (one.now, one.early, one.likely, one.late) == ("not_readable", None, None, None)


def test_the_last_readable_level_counts() -> None:
    one = window(
        visit("2025-12-10", 59_000, {"item": "engine_oil", "level": "ok"}),
        visit("2026-01-10", 60_000, {"item": "engine_oil", "level": "not_readable"}),
    )
    assert one.likely is not None


def test_battery_age_is_counted_from_its_replacement() -> None:
    told = {"item": "battery", "cca": 600, "cca_rated": 640, "changed_on": "2022-01-10"}
    one = window(visit("2026-01-10", 60_000, told))
    # The life formula at four years of age: .205679 within 180 days (test_lives.py).
    assert dict(one.chances)[180] == pytest.approx(0.205679, abs=0.001)
    assert (one.because.since_how, one.because.since_on) == ("told", date(2022, 1, 10))


def test_a_weak_battery_is_due_sooner_and_a_failing_one_now() -> None:
    def battery(cca: int) -> dict[str, object]:
        return {"item": "battery", "cca": cca, "cca_rated": 640, "changed_on": "2022-01-10"}

    good, weak, failing = (window(visit("2026-01-10", 60_000, battery(cca))) for cca in (600, 500, 470))
    assert dict(weak.chances)[180] > dict(good.chances)[180]
    # 470 of 640 are under 75 %.
    assert failing.is_past and not weak.is_past
    assert window(visit("2026-01-10", 60_000, {"item": "battery", "verdict": "replace"})).is_past


def test_oil_service_by_miles_or_months_whichever_first() -> None:
    """7,500 miles less 500, 274 days less 30 (middle of the trade's ranges)."""
    done = {"item": "oil_service", "done_on": "2025-12-31", "done_odometer": 59_700}
    one = window(
        visit("2025-01-10", 49_000, {"item": "oil_service", "life_percent": 80}), visit("2026-01-10", 60_000, done)
    )
    # 11,000 miles a year: 6,700 miles left take 222 days, the months 234.
    assert one.late == DAY + timedelta(days=234)
    assert one.likely is not None
    assert (one.likely - DAY).days == pytest.approx(222, abs=12)
    assert window(visit("2026-01-10", 60_000, {**done, "done_odometer": 52_500})).likely == DAY


def test_a_sticker_comes_before_the_interval() -> None:
    said = {"item": "oil_service", "due_on": "2026-05-10", "due_odometer": 90_000}
    one = window(visit("2026-01-10", 60_000, said))
    assert one.likely == date(2026, 5, 10) - timedelta(days=30)


def test_oil_life_on_the_display() -> None:
    one = window(visit("2026-01-10", 60_000, {"item": "oil_service", "life_percent": 55}))
    # 40 points above the limit of 15: 40 % of 274 days at the latest.
    assert one.late == DAY + timedelta(days=round(0.4 * 274))
    assert one.now == 55
    assert window(visit("2026-01-10", 60_000, {"item": "oil_service", "life_percent": 15})).is_past


def test_oil_service_done_at_the_visit_starts_anew() -> None:
    said = {"item": "oil_service", "life_percent": 10}
    one = window(visit("2026-01-10", 60_000, said, work_done=[{"item": "oil_service", "did": "serviced"}]))
    assert not one.is_past
    assert one.late == DAY + timedelta(days=244)


def test_tire_age_is_due_at_six_years() -> None:
    one = window(visit("2026-01-10", 60_000, {"item": "tire_age", "position": "front_left", "date_code": "0821"}))
    # Week 8 of 2021 began on 21 February (49 CFR 574.5).
    assert one.likely is not None
    assert abs((one.likely - date(2027, 2, 21)).days) <= 2
    assert one.now == pytest.approx(4.9)
    old = window(visit("2026-01-10", 60_000, {"item": "tire_age", "position": "front_left", "date_code": "0819"}))
    assert old.is_past


def test_looks_that_are_due_and_looks_to_look_at_again() -> None:
    found = windows(
        visit(
            "2026-01-10", 60_000,
            {"item": "wiper_blade", "position": "front", "looks": "streaks"},
            {"item": "wiper_blade", "position": "rear", "looks": "even"},
            {"item": "brake_rotor", "position": "rear_left", "looks": "scored"},
            {"item": "brake_pad", "position": "front_left", "unit": "mm", "value": 9.0, "looks": "cracked"},
        )
    )  # fmt: skip
    assert found["wiper_blade", "front"].is_past
    assert found["wiper_blade", "front"].now == "streaks"
    rear = found["wiper_blade", "rear"]
    assert not rear.is_past and rear.likely is not None
    assert found["brake_rotor", "rear_left"].likely == DAY + timedelta(days=182)
    # Whatever its thickness.
    assert found["brake_pad", "front_left"].is_past


def test_a_sticker_is_due_45_days_before_its_month_ends() -> None:
    one = window(visit("2026-01-10", 60_000, {"item": "inspection_sticker", "good_until": "2026-09"}))
    assert one.early == one.late == date(2026, 9, 30) - timedelta(days=45)


def test_brake_fluid_water_rises_to_three_percent() -> None:
    """1.0 % a year from the change (common practice): 1.2 % after 1.2 years, 1.8 years left."""
    told = {"item": "brake_fluid", "water_percent": 1.2, "changed_on": "2024-10-30"}
    one = window(visit("2026-01-10", 60_000, told))
    assert one.likely is not None
    assert (one.likely - DAY).days == pytest.approx(1.8 * 365.25, rel=0.1)
    assert one.because.unit == "percent a year"
    assert one.because.distance_per_day is None
    assert window(visit("2026-01-10", 60_000, {"item": "brake_fluid", "water_percent": 3.0})).is_past


def test_brake_fluid_by_years_where_no_water_was_measured() -> None:
    one = window(visit("2026-01-10", 60_000, {"item": "brake_fluid", "changed_on": "2025-01-10", "looks": "even"}))
    assert one.because.model == "life/1"
    assert one.likely is not None
    assert (one.likely - date(2025, 1, 10)).days == pytest.approx(3 * 365, rel=0.05)
