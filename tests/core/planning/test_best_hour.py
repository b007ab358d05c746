"""The learned hour: never outside what the law and the shop allow, no prophecy of its own, spread, fair."""

from __future__ import annotations

import random
from collections import Counter
from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from followup.core.planning.answer_hours import (
    AGES,
    HOURS,
    AnswerCurve,
    AnswerHabit,
    Heard,
    learn_curve,
    learn_habit,
    quick_chance,
)
from followup.core.planning.best_hour import (
    ENOUGH_ANSWERS,
    SHARE_DRAWN,
    SHARE_USUAL,
    HourPicture,
    leaving,
    says,
    slots_of,
)
from followup.core.planning.decide import decide
from followup.core.planning.hours import Where, next_moment
from followup.core.planning.picture import CarPicture, DueItem, Recall
from followup.core.shop import Shop
from followup.rehearsal.bench.hours import live
from tests.core.planning.cars import MEASURED_ON, NOW, SHOP, car, shop

CHICAGO = ZoneInfo("America/Chicago")
ON = shop(learns_hours=True)
HERE = Where(("America/Chicago",))
RATES = (0.1, 0.05, 0.02, 0.008)
# 6:00 in Chicago on a Tuesday.
EARLY = datetime(2026, 3, 10, 11, 0, tzinfo=UTC)


def habit(*best: int, answers: int = 500, times: float = 5.0) -> AnswerHabit:
    """A shop whose customers answer so many times as much in these hours."""
    by_hour = tuple(times if hour in best else 1.0 for hour in range(HOURS))
    return AnswerHabit(AnswerCurve(by_hour, RATES, (0,) * HOURS, 3 * answers, answers))


def hour(*best: int, answers: int = 500, times: float = 5.0) -> HourPicture:
    """The same, with no invites planned yet."""
    return HourPicture(habit(*best, answers=answers, times=times))


def local(at: datetime) -> datetime:
    """The wall time in Chicago."""
    return at.astimezone(CHICAGO)


# ------------------------------------------------------------------------------------------------ what is allowed
ZONES = ("America/Chicago", "America/New_York", "America/Los_Angeles", "America/Phoenix", "Pacific/Honolulu",
         "America/St_Johns", "Asia/Kolkata")  # fmt: skip
# The days on which clocks change in the US in 2026 (15 U.S.C. 260a: second Sunday of March, first of November), the
# days around them, and any other.
CHANGES = (datetime(2026, 3, 6, tzinfo=UTC), datetime(2026, 10, 30, tzinfo=UTC))
moments = st.one_of(
    st.builds(lambda begin, minutes: begin + timedelta(minutes=minutes), st.sampled_from(CHANGES),
              st.integers(0, 5 * 24 * 60)),
    st.builds(lambda minutes: datetime(2026, 1, 1, tzinfo=UTC) + timedelta(minutes=minutes),
              st.integers(0, 365 * 24 * 60)),
)  # fmt: skip
draws = st.floats(0, 1, exclude_max=True)
hours = st.builds(
    lambda best, answers, own: HourPicture(replace(habit(*best, answers=answers), own=tuple(own))),
    st.sets(st.integers(0, 23), max_size=4), st.sampled_from([0, 59, 60, 5000]),
    st.lists(st.floats(0.1, 9), min_size=HOURS, max_size=HOURS),
)  # fmt: skip


@settings(max_examples=100)
@given(
    moments, st.lists(st.sampled_from(ZONES), max_size=2), st.sampled_from([None, "FL", "KY", "RI"]), hours,
    draws, draws, draws,
)  # fmt: skip
def test_no_learned_hour_is_outside_what_is_allowed(
    now: datetime, zones: list[str], state: str | None, hour: HourPicture, group: float, in_hour: float, minute: float
) -> None:
    where = Where(tuple(zones), state)
    found = leaving("invite", now, ON, where, hour, group, in_hour, minute)
    first = next_moment("invite", now, ON, where)
    assert (found is None) == (first is None)
    if found is None or first is None:
        return
    assert first <= found.at <= first + timedelta(hours=24)
    # The law to the second, and the shop's own hours as shipped, worked out here from the wall clocks alone.
    for zone in ("America/Chicago", *zones):
        wall = found.at.astimezone(ZoneInfo(zone))
        # 47 CFR 64.1200(c)(1): 8 a.m. to 9 p.m. at the called party's location.
        assert 8 <= wall.hour < 21
        assert wall.weekday() < 6 and 10 <= wall.hour < (17 if wall.weekday() == 5 else 18), (zone, wall)


@pytest.mark.parametrize("day", [date(2026, 3, 7), date(2026, 3, 9), date(2026, 10, 31), date(2026, 11, 2)])
def test_around_a_change_of_clocks_an_hour_is_that_of_the_wall_clock(day: date) -> None:
    night = datetime(day.year, day.month, day.day, 0, 30, tzinfo=CHICAGO).astimezone(UTC)
    found = leaving("invite", night, ON, HERE, hour(14, 15, 16), 0.99, 0.0, 0.5)
    assert found is not None and found.how == "learned"
    assert (local(found.at).date(), local(found.at).hour) == (day, 14)


def test_answers_and_texts_about_visits_never_wait_for_an_hour() -> None:
    for kind in ("answer", "visit"):
        assert leaving(kind, NOW, ON, HERE, hour(17), 0.99, 0.5, 0.5) == leaving(kind, NOW, SHOP, HERE, None)


# ---------------------------------------------------------------------------------------------------- the choice
def test_an_invite_leaves_when_quick_answers_are_likeliest_and_says_why() -> None:
    found = leaving("invite", EARLY, ON, HERE, hour(16, 17, 18), 0.99, 0.0, 0.5)
    # A text of 16:30 has the three hours in which much is answered before it.
    assert found is not None and found.how == "learned" and local(found.at).strftime("%a %H:%M") == "Tue 16:30"
    assert "a quick answer is likeliest then (500 answers)" in says(found)


def test_off_it_leaves_at_the_first_moment() -> None:
    found = leaving("invite", EARLY, SHOP, HERE, hour(16, 17, 18), 0.99, 0.0, 0.5)
    assert found is not None and (local(found.at).hour, found.how) == (10, None)


def test_with_little_evidence_the_usual_hour_stays_and_says_how_much_is_missing() -> None:
    found = leaving("invite", EARLY, ON, HERE, hour(16, 17, answers=ENOUGH_ANSWERS - 1), 0.99, 0.0, 0.5)
    assert found is not None and (local(found.at).hour, found.how) == (10, "few")
    assert f"{ENOUGH_ANSWERS} answers that it takes {ENOUGH_ANSWERS - 1} are there" in says(found)
    enough = leaving("invite", EARLY, ON, HERE, hour(16, 17, answers=ENOUGH_ANSWERS), 0.99)
    assert enough is not None and enough.how == "learned"


def test_an_hour_that_promises_hardly_more_is_not_waited_for() -> None:
    found = leaving("invite", EARLY, ON, HERE, hour(15, 16, 17, times=1.05), 0.99, 0.0, 0.5)
    assert found is not None and (local(found.at).hour, found.how) == (10, "no_better")


def test_one_in_ten_keeps_the_usual_hour_and_one_in_ten_leaves_at_any() -> None:
    luck = random.Random(5)
    found = [leaving("invite", EARLY, ON, HERE, hour(16, 17), *(luck.random() for _ in range(3))) for _ in range(2000)]
    ways = Counter(one.how for one in found if one)
    # Binomial: three standard deviations of 2,000 draws at .1 are 2 %.
    assert ways["usual"] / 2000 == pytest.approx(SHARE_USUAL, abs=0.02)
    assert ways["drawn"] / 2000 == pytest.approx(SHARE_DRAWN, abs=0.02)
    drawn = Counter(local(one.at).hour for one in found if one and one.how == "drawn")
    assert set(drawn) == set(range(10, 18)) and min(drawn.values()) > 10


def test_not_all_leave_in_the_same_hour_nor_in_the_same_minute() -> None:
    few = replace(ON, rules=replace(ON.rules, invites_an_hour=30))
    load: Counter[datetime] = Counter()
    luck, left = random.Random(6), []
    for _ in range(100):
        picture = HourPicture(habit(16, 17, 18), load)
        found = leaving("invite", EARLY, few, HERE, picture, 0.99, 0.0, luck.random())
        assert found is not None
        left.append(local(found.at))
        load[found.at.replace(minute=0, second=0)] += 1
    by_hour = Counter(one.hour for one in left)
    assert max(by_hour.values()) == 30 and by_hour[16] == 30 and by_hour[17] == 30
    assert len({one.replace(second=0) for one in left}) > 60


def test_it_waits_no_longer_than_a_day_and_not_into_a_closed_one() -> None:
    # Saturday 12:00: the next noon is a Sunday's, on which no invite leaves.
    noon = datetime(2026, 3, 14, 17, 0, tzinfo=UTC)
    assert {local(one[0]).strftime("%a") for one in slots_of("invite", noon, ON, HERE)} == {"Sat"}
    monday = datetime(2026, 3, 9, 20, 0, tzinfo=UTC)
    found = leaving("invite", monday, ON, HERE, hour(11, 12, 13), 0.99, 0.0, 0.5)
    assert found is not None and local(found.at).strftime("%a %H") == "Tue 11"


def _decided(picture: CarPicture) -> datetime:
    found = decide(replace(picture, shop=ON, hour=hour(17)), EARLY).text
    assert found is not None
    return local(found.leaves_at)


def test_recalls_and_legal_limits_leave_at_the_first_moment() -> None:
    legal = DueItem("tire_tread", "front_left", 0.9, 0.9, MEASURED_ON, chance_legal=0.9)
    vehicles = [f"C{number}" for number in range(30)]
    moved = [_decided(car(vehicle=one)) for one in vehicles]
    assert sum(one.hour > 10 for one in moved) >= 20
    for one in vehicles:
        assert _decided(car(vehicle=one, due=(legal,))).hour == 10
        assert _decided(car(vehicle=one, due=(), recalls=(Recall("R1", MEASURED_ON),))).hour == 10


def test_decided_twice_it_is_the_same_moment() -> None:
    assert _decided(car()) == _decided(car())


# ------------------------------------------------------------------------------------------------------ learning
def _heard(rates: list[float], texts: int, leaves_at_hours: tuple[int, ...], seed: int, phone: int = 0) -> list[Heard]:
    """Texts that left at these hours to customers who answer by a rate an hour of the day, whatever its age."""
    luck, found = random.Random(seed), []
    for number in range(texts):
        day = date(2026, 1, 5) + timedelta(days=number % 300)
        at = datetime.combine(day, time(luck.choice(leaves_at_hours)), CHICAGO).astimezone(UTC)
        needed, waited = luck.expovariate(1.0), 0.0
        while waited < AGES[-1]:
            needed -= rates[local(at + timedelta(hours=waited)).hour] / 4
            waited += 0.25
            if needed <= 0:
                break
        answered = at + timedelta(hours=waited - 0.125) if needed <= 0 else None
        found.append(Heard(phone, at, answered))
    return found


def test_the_hour_that_the_shop_always_used_does_not_prove_itself() -> None:
    """All texts leave at 10 and are answered at an even rate: most answers come at 10, and no hour is better."""
    heard = _heard([0.12] * HOURS, 3000, (10,), 3)
    curve = learn_curve(heard, "America/Chicago")
    counted = Counter(local(one.answered_at).hour for one in heard if one.answered_at)
    assert counted.most_common(1)[0][0] == 10, "by counting alone it would be proven"
    assert all(0.8 < one < 1.25 for one in curve.by_hour[8:21]), curve.by_hour
    chances = [quick_chance(AnswerHabit(curve), wall + 0.5) for wall in range(10, 18)]
    assert max(chances) < 1.1 * chances[0]


def test_the_hours_in_which_customers_answer_are_found() -> None:
    rates = [0.2 if wall in (16, 17, 18) else 0.04 for wall in range(HOURS)]
    curve = learn_curve(_heard(rates, 1500, tuple(range(10, 18)), 4), "America/Chicago")
    assert min(curve.by_hour[16:19]) > 2 * max(curve.by_hour[9:15])
    chances = {wall: quick_chance(AnswerHabit(curve), wall + 0.5) for wall in range(10, 18)}
    assert max(chances, key=lambda wall: chances[wall]) in (15, 16)


def test_a_customer_differs_from_the_shop_only_as_far_as_answers_show_it() -> None:
    curve = learn_curve(_heard([0.08] * HOURS, 1500, tuple(range(10, 18)), 5), "America/Chicago")
    assert learn_habit(curve, (), "America/Chicago").own == (1.0,) * HOURS
    noon = datetime(2026, 5, 5, 12, 20, tzinfo=CHICAGO).astimezone(UTC)
    own = [Heard(1, noon - timedelta(hours=2), noon + timedelta(minutes=5 * number)) for number in range(4)]
    once, often = (learn_habit(curve, own[:count], "America/Chicago") for count in (1, 4))
    assert (once.own_answers, often.own_answers) == (1, 4)
    assert 1 < once.own[12] < often.own[12] and often.own[12] > 1.7
    assert often.own[18] == pytest.approx(1.0, abs=0.05)


def test_a_stop_is_no_answer_and_ends_the_waiting() -> None:
    at = datetime(2026, 5, 5, 15, 0, tzinfo=UTC)
    stopped = learn_curve([Heard(1, at, None, at + timedelta(minutes=30))], "America/Chicago")
    assert (stopped.texts, stopped.answers, sum(stopped.answered)) == (1, 0, 0)


@pytest.mark.parametrize("zone", ZONES)
def test_each_answer_counts_in_the_wall_hour_in_which_it_came(zone: str) -> None:
    left = datetime(2026, 6, 1, 15, 10, tzinfo=UTC)
    heard = [Heard(1, left, left + timedelta(minutes=37 * number)) for number in range(1, 30)]
    expected = Counter(one.answered_at.astimezone(ZoneInfo(zone)).hour for one in heard if one.answered_at)
    assert learn_curve(heard, zone).answered == tuple(expected[wall] for wall in range(HOURS))


def test_customers_with_hours_of_their_own_are_answered_sooner_by_it() -> None:
    """The bench's own world, small: `followup bench hours` tells how much on how many."""
    usual, learned = live("usual", 40, 7001), live("learned", 40, 7001)
    assert learned.quick("learned") > 1.5 * usual.quick()
    assert learned.out_of_hours == 0


def test_a_shop_without_rules_for_it_is_planned_as_before() -> None:
    plain: Shop = shop()
    assert not plain.rules.learns_hours, "a manager decides whether hours are chosen"
    text = decide(replace(car(), shop=plain), EARLY).text
    assert text is not None and local(text.leaves_at).hour == 10 and text.leaving is not None
    assert text.leaving.how is None
