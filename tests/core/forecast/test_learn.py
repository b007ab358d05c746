"""A shop's own priors from its cars: found again on invented fleets, kept only where they foretell no worse."""

import json
import random
from dataclasses import replace

import pytest

from followup.core.forecast.history import CarHistory
from followup.core.forecast.learn import learn
from followup.core.forecast.learned import USAGE, Learned, LearnedPart, found_words, sentence, sentences
from followup.core.forecast.priors import PUBLISHED, ShopPriors, UsagePrior, WearLesson
from followup.core.inspection import read_line
from followup.core.items import BY_CODE
from followup.rehearsal.fleet.build import build_fleet
from followup.rehearsal.fleet.habits import DIFFERING
from tests.core.forecast.told import NOW, history, pad, tread, visit
from tests.core.lines import line_text

PLACES = ("front_left", "front_right", "rear_left", "rear_right")


@pytest.fixture(scope="module")
def differing() -> list[CarHistory]:
    """A shop whose treads wear 1.4, pads 0.7 times as fast, and whose customers drive 1.3 times as far."""
    return build_fleet(DIFFERING, 150, 4101).histories()


@pytest.fixture(scope="module")
def taught(differing: list[CarHistory]) -> Learned:
    return learn(differing)


def part(learned: Learned, name: str) -> LearnedPart:
    return next(one for one in learned.parts if one.part == name)


def test_a_shop_that_differs_is_found_to_differ(taught: Learned) -> None:
    """Source: what the fleet was made with; 150 cars know it to about a tenth."""
    assert {one.part: one.outcome for one in taught.parts} == {
        USAGE: "learned", "tire_tread": "learned", "brake_pad": "learned",
    }  # fmt: skip
    for name, made_with in (("tire_tread", 1.4), ("brake_pad", 0.7)):
        for axle, factor in part(taught, name).found:
            assert factor == pytest.approx(made_with, rel=0.2), (name, axle)
    assert part(taught, USAGE).found[0][1] == pytest.approx(1.3, rel=0.12)


def test_what_is_kept_foretells_better(taught: Learned) -> None:
    for one in taught.parts:
        assert one.own_score is not None and one.published_score is not None
        assert one.own_score <= one.published_score


def test_it_is_kept_as_plain_json(taught: Learned) -> None:
    assert Learned.from_json(json.loads(json.dumps(taught.to_json()))) == taught


def garbage(cars: int) -> list[CarHistory]:
    """Cars whose readings and odometers are drawn blindly, but for being rising or falling in the main."""
    dice, found = random.Random(7), []
    for car in range(cars):
        miles = dice.uniform(5_000, 90_000)
        lines = []
        for year in (2023, 2024, 2025):
            miles += dice.choice([100, 500, 40_000])
            readings = [tread(dice.randrange(3, 12), place) for place in PLACES]
            readings += [pad(dice.randrange(3, 12), place) for place in PLACES]
            car_of = {"id": f"V-{car}", "class": "car", "driven": "front", "first_used_on": "2019-05-01"}
            lines.append(visit(f"{year}-05-0{dice.randrange(1, 9)}", round(miles), *readings, vehicle=car_of))
        found.append(history(*lines))
    return found


def test_what_foretells_worse_is_not_kept(monkeypatch: pytest.MonkeyPatch) -> None:
    """Never worse than the published: priors that would be, however they came about, are thrown away in words."""
    from followup.core.forecast import learn as module

    absurd = ShopPriors(
        UsagePrior(log_miles_per_day=6.0),
        (WearLesson("tire_tread", (("every", 1.5),), cars=90), WearLesson("brake_pad", (("every", -2.0),), cars=90)),
    )
    monkeypatch.setattr(module, "fit", lambda evidence, published: absurd)
    found = learn(build_fleet(DIFFERING, 60, 4102).histories())
    assert {one.outcome for one in found.parts} == {"published"}
    assert found.priors == PUBLISHED
    assert not found.is_news
    assert all("published values stay" in one for one in sentences(found, BY_CODE))


def test_what_was_learned_before_stays_where_the_new_is_worse(
    monkeypatch: pytest.MonkeyPatch, differing: list[CarHistory], taught: Learned
) -> None:
    from followup.core.forecast import learn as module

    worse = replace(taught.priors, wear=(WearLesson("tire_tread", (("every", 1.5),), cars=90),))
    monkeypatch.setattr(module, "fit", lambda evidence, published: worse)
    found = learn(differing, in_use=taught.priors)
    assert part(found, "tire_tread").outcome == "kept_old"
    assert found.priors.lesson("tire_tread") == taught.priors.lesson("tire_tread")
    assert "what was learned before stays" in sentence(part(found, "tire_tread"), BY_CODE)


def test_a_shop_whose_numbers_are_dice_is_never_made_worse() -> None:
    """Whatever is made of garbage, nothing is kept that foretold the garbage worse than the published."""
    found = learn(garbage(40))
    for one in found.parts:
        if one.outcome == "learned":
            assert one.own_score is not None and one.published_score is not None
            assert one.own_score <= one.published_score
        else:
            assert found.priors.lesson(one.part) is None


def test_too_few_cars_are_refused_in_words(differing: list[CarHistory]) -> None:
    found = learn(differing[:8])
    assert found.priors == PUBLISHED
    assert {one.outcome for one in found.parts} == {"too_few"}
    assert "12 are needed" in sentences(found, BY_CODE)[0]


def test_no_cars_at_all() -> None:
    found = learn([])
    assert found.priors == PUBLISHED
    assert sentences(found, BY_CODE) == ["Nothing can be learned from 0 cars: 12 that were seen twice are needed."]


def test_cars_that_came_once_teach_nothing_of_wear(differing: list[CarHistory]) -> None:
    """How much is left of what may be the first set is no evidence of how fast it wears."""
    once = []
    for car in differing:
        first = min(one.on for one in car.readings)
        once.append(replace(car.until(first), work=()))
    found = learn(once)
    assert found.priors.wear == ()
    assert {part(found, name).outcome for name in ("tire_tread", "brake_pad")} == {"too_few"}


def test_facts_of_the_shop_are_kept(differing: list[CarHistory]) -> None:
    in_use = replace(PUBLISHED, gauges_round_down=True)
    assert learn(differing[:60], in_use).priors.gauges_round_down


def test_all_cars_are_told_to_the_progress_bar(differing: list[CarHistory]) -> None:
    told: list[int] = []
    learn(differing[:30], progress=told.append)
    assert 30 <= sum(told) <= 4 * 30


def test_words_say_how_much_and_which_way() -> None:
    one = LearnedPart("brake_pad", "learned", 214, 100, 0.47, 0.41, (("front", 0.882), ("rear", 1.01)))
    assert found_words(one) == "front wears about 12 % slower than is usual, rear wears as is usual"
    assert sentence(one, BY_CODE).startswith("Brake pad: front wears about 12 % slower")
    assert "learned from 214 cars" in sentence(one, BY_CODE)
    usage = LearnedPart(USAGE, "learned", 300, 200, 0.23, 0.21, (("", 1.3),))
    assert found_words(usage) == "customers drive about 30 % more than is usual"


def test_mixed_gauges_and_rounding_do_not_break_it() -> None:
    """A shop with whole and tenth millimeters, wheels left on, one side only, and an item that wears by the year."""
    dice, cars = random.Random(5), []
    for car in range(30):
        miles, lines = 20_000.0, []
        for year in (2023, 2024, 2025):
            miles += dice.uniform(6_000, 14_000)
            left = 9.0 - (miles - 20_000) * 0.00015
            readings = [
                tread(round(left), "front_left", how="wheel_on"),
                tread(round(left * 0.79375, 1), "front_right", "mm"),
                pad(round(left), "rear_left"),
                {"item": "brake_fluid", "water_percent": round(0.6 * (year - 2022) + dice.uniform(-0.2, 0.2), 1)},
            ]
            car_of = {"id": f"V-{car}", "class": "suv", "powertrain": "electric", "first_used_on": "2022-05-01"}
            lines.append(visit(f"{year}-05-02", round(miles), *readings, vehicle=car_of))
        cars.append(history(*lines))
    found = learn(cars)
    assert {one.part for one in found.parts} == {USAGE, "tire_tread", "brake_pad", "brake_fluid"}
    fluid = part(found, "brake_fluid")
    # Water rises 0.6 % a year in these cars, 1.0 % in the published.
    assert fluid.found == (("", pytest.approx(0.6, abs=0.15)),)


def test_lines_of_the_contract_are_enough() -> None:
    """From told lines to lessons without a database."""
    from followup.core.forecast.history import history_of_lines

    lines = [read_line(line_text(**visit("2026-01-10", 60_000, tread(6))), NOW, BY_CODE)]
    assert learn(history_of_lines(lines)).priors == PUBLISHED
