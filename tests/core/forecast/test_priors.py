"""What a shop taught: corrections of the published priors, kept as plain JSON, and nothing changed by default."""

import json
import subprocess
import sys
from datetime import date
from math import exp, log

import pytest

from followup.core.forecast.due import forecast_cars
from followup.core.forecast.priors import PUBLISHED, ShopPriors, UsagePrior, WearLesson, traits_of
from followup.core.items.brakes import pad_prior
from followup.core.items.tires import tread_prior
from followup.core.vehicle import Vehicle
from tests.core.forecast.told import history, pad, tread, visit

VISITS = (
    visit("2024-03-02", 40_000, tread(8), tread(8, "front_right"), pad(9.0), pad(8.5, "front_right")),
    visit("2025-03-02", 52_000, tread(6), tread(5, "front_right"), pad(7.0), pad(7.0, "front_right")),
)
TAUGHT = ShopPriors(
    UsagePrior(log_miles_per_day=log(40.0), between_drivers=0.3),
    (
        WearLesson("tire_tread", (("every", 0.2), ("axle=rear", -0.1), ("class=suv", 0.05)), cars=120),
        WearLesson("brake_pad", (("every", -0.3),), 0.9, 0.8, 0.7, 1.2, cars=80),
    ),
)


def test_nothing_taught_changes_nothing() -> None:
    """An identity: corrections of one are the published priors to the last bit."""
    empty = ShopPriors(UsagePrior(), (WearLesson("tire_tread"), WearLesson("brake_pad")))
    cars = [history(*VISITS)]
    assert forecast_cars(cars, "last", priors=empty) == forecast_cars(cars, "last", priors=PUBLISHED)
    assert forecast_cars(cars, "last", priors=PUBLISHED) == forecast_cars(cars, "last")


def test_what_was_taught_comes_back_from_json() -> None:
    kept = json.loads(json.dumps(TAUGHT.to_json()))
    assert ShopPriors.from_json(kept) == TAUGHT
    assert ShopPriors.from_json(PUBLISHED.to_json()) == PUBLISHED


def test_a_version_that_lacks_something_takes_the_published_value() -> None:
    kept = {"usage": {"between_drivers": 0.5, "not_known_yet": 1}, "wear": [{"item": "tire_tread", "new_word": 2}]}
    found = ShopPriors.from_json(kept)
    assert found.usage == UsagePrior(between_drivers=0.5)
    assert found.wear == (WearLesson("tire_tread"),)


def test_a_kind_of_car_that_was_never_seen_keeps_its_published_value_times_what_was_taught() -> None:
    """Identity: an electric pickup was never seen; its published 1.2 times and its new tread stay."""
    unseen = Vehicle("V", vehicle_class="pickup", powertrain="electric", driven="front")
    published = tread_prior(unseen, "front_left")
    found = TAUGHT.wear_prior("tire_tread", published, unseen, "front_left")
    assert found.rate_per_1000_miles == pytest.approx(published.rate_per_1000_miles * exp(0.2))
    assert found.new_value == published.new_value


def test_corrections_of_all_traits_add_up() -> None:
    suv = Vehicle("V", vehicle_class="suv", driven="all")
    published = tread_prior(suv, "rear_left")
    found = TAUGHT.wear_prior("tire_tread", published, suv, "rear_left")
    assert found.rate_per_1000_miles == pytest.approx(published.rate_per_1000_miles * exp(0.2 - 0.1 + 0.05))


def test_spreads_and_errors_are_corrected_by_factors() -> None:
    car = Vehicle("V")
    published = pad_prior(car, "front_left")
    found = TAUGHT.wear_prior("brake_pad", published, car, "front_left")
    assert found.between_cars == pytest.approx(0.40 * 0.9)
    assert found.between_items == pytest.approx(0.25 * 0.8)
    assert found.reading_error == pytest.approx(0.5 * 0.7)
    assert found.mate_error == pytest.approx(0.4 * 1.2)


def test_an_untold_car_is_taken_for_what_most_cars_are() -> None:
    told = Vehicle("V", vehicle_class="car", driven="front", powertrain="gasoline")
    assert traits_of(Vehicle("V"), "front_left") == traits_of(told, "front_left") == ("every", "axle=front")
    assert "axle=rear driven=all" in traits_of(Vehicle("V", driven="all"), "rear_left")


def test_faster_wear_that_was_taught_is_due_earlier() -> None:
    one_visit = [history(VISITS[0])]
    taught = ShopPriors(wear=(WearLesson("tire_tread", (("every", log(1.4)),)),))
    usual = forecast_cars(one_visit, date(2024, 3, 2))[0].curve.quantile(0.5)
    assert forecast_cars(one_visit, date(2024, 3, 2), priors=taught)[0].curve.quantile(0.5) < 0.8 * usual


def test_priors_are_light() -> None:
    """Pages read them: numpy takes longer to load than a page may."""
    program = "import sys, followup.core.forecast.priors; print('numpy' in sys.modules)"
    done = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True, timeout=60, check=True)
    assert done.stdout.strip() == "False"
