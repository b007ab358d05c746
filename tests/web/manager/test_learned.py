"""What our cars taught, as a manager reads it: what is in use, the last look, the way back and forth."""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import timedelta

import pytest

from followup.core.forecast.learned import USAGE, Learned, LearnedPart
from followup.core.forecast.priors import PUBLISHED, ShopPriors, WearLesson
from followup.storage import learned_priors, shops
from followup.storage.shop_priors import priors_of
from followup.workflows.learn_priors import NIGHTLY
from tests.web.house import TestHouse
from tests.web.manager.conftest import Member

Members = Callable[[str], Member]
TAUGHT = Learned(
    ShopPriors(wear=(WearLesson("brake_pad", (("every", -0.12),), cars=214),)),
    260,
    (
        LearnedPart(USAGE, "published", 250, 250, 0.21, 0.22, (("", 1.01),)),
        LearnedPart("brake_pad", "learned", 214, 400, 0.47, 0.41, (("front", 0.88), ("rear", 0.99))),
        LearnedPart("brake_fluid", "too_few", 3),
    ),
)


@pytest.fixture
def taught(house: TestHouse, member: Members) -> Member:
    """A manager of a shop that learned once, at night."""
    manager = member("manager")
    at = house.now() - timedelta(hours=8)
    with house.store.write() as connection:
        assert learned_priors.keep(connection, 1, at, NIGHTLY, "learned", True, TAUGHT.to_json(), 0) == 1
    return manager


def used(house: TestHouse) -> ShopPriors:
    with house.store.read() as connection:
        return priors_of(connection, shops.load_shop(connection, 1))


def words(page: str) -> str:
    return re.sub(r"\s+", " ", re.sub(r"<[^>]+>", " ", page))


def test_a_new_shop_is_told_what_it_needs(member: Members) -> None:
    page = words(member("manager").page("/manager/learned"))
    assert "Forecasts go by the published values." in page
    assert "needs 12 cars that were seen twice" in page
    assert "Nothing was learned yet." in page


def test_what_was_learned_is_told_in_plain_words(taught: Member) -> None:
    page = words(taught.page("/manager/learned"))
    assert "Forecasts go by what 260 cars taught, version 1" in page
    assert "Front wears about 12 % slower than is usual, rear wears as is usual" in page
    assert "learned from 214 cars" in page
    assert "Brake fluid: only 3 cars tell something, 12 are needed." in page
    assert "Miles driven: the published values stay." in page
    assert "0.410 mm" in page and "0.470 mm" in page
    assert "at night" in page


def test_back_to_the_published_and_forth_again(taught: Member, house: TestHouse) -> None:
    assert used(house).wear == TAUGHT.priors.wear
    assert taught.press("/manager/learned/published", based_on=1).status_code == 303
    assert used(house).wear == PUBLISHED.wear
    page = words(taught.page("/manager/learned"))
    assert "Forecasts go by the published values" in page and "Learning rests" in page
    assert taught.press("/manager/learned/versions/1/use", based_on=2).status_code == 303
    assert used(house).wear == TAUGHT.priors.wear
    assert "an earlier version brought back" in words(taught.page("/manager/learned"))


def test_a_press_on_an_old_page_changes_nothing(taught: Member, house: TestHouse) -> None:
    answer = taught.press("/manager/learned/published", based_on=0)
    assert answer.status_code == 303
    assert used(house).wear == TAUGHT.priors.wear
    assert "Somebody else changed it meanwhile" in taught.page("/manager/learned")


def test_a_version_that_is_not_there(taught: Member) -> None:
    assert taught.press("/manager/learned/versions/9/use", based_on=1).status_code == 404


def test_it_is_for_managers_alone(taught: Member, member: Members) -> None:
    assert 'href="/manager/learned"' in taught.page("/manager/")
    advisor = member("advisor")
    assert advisor.client.get("/manager/learned").status_code == 403
    assert advisor.press("/manager/learned/published", based_on=1).status_code == 403
