"""The plain world in which ways of inviting are compared. Its rule is the real one: `decide` answers the same cases."""

from __future__ import annotations

import json
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import numpy as np
import pytest
from click.testing import CliRunner

from followup.cli.bench import bench
from followup.core.forecast.due import forecast_cars
from followup.core.forecast.window import DueWindow
from followup.core.planning.decide import decide
from followup.core.planning.picture import BookingSeen, CarPicture, DueItem, EarlierInvite
from followup.core.planning.worth import WornAhead, worn_are_worth_a_text
from followup.core.shop import ShopRules
from followup.core.visit import Visit
from followup.rehearsal.fleet.build import build_fleet
from followup.rehearsal.fleet.habits import AS_PUBLISHED
from followup.rehearsal.policies.cars import LivedCars
from followup.rehearsal.policies.forecast import text_days
from followup.rehearsal.policies.overdue import WHY
from followup.rehearsal.policies.policies import AS_SHIPPED, Policy, plain
from followup.rehearsal.policies.rule import Told
from followup.rehearsal.policies.run import compare
from followup.rehearsal.policies.world import People, build_world
from tests.core.planning.cars import car

# A Tuesday; invites leave from 10:00 on, and no holiday of the weeks that follow is a Tuesday at 11:00 in Chicago.
BEGAN = datetime(2026, 1, 6, 17, tzinfo=UTC)
PHONES, WEEKS = 40, 60


def _picture(
    week: int, visited: int | None, invites: list[EarlierInvite], due: bool, legal: bool, is_booked: bool
) -> CarPicture:
    """The same phone as the rule on arrays sees it, as a picture that `decide` is asked with."""
    now = BEGAN + timedelta(weeks=week)
    visits = () if visited is None else (_visit(visited),)
    measured = None if visited is None else (BEGAN + timedelta(weeks=visited)).date()
    item = DueItem("tire_tread", "front_left", float(due), float(due), measured, chance_legal=float(legal))
    booked = (BookingSeen("1", "confirmed", now + timedelta(days=3), now - timedelta(days=1)),) if is_booked else ()
    return replace(car(), due=(item,), visits=visits, invites=tuple(invites), bookings=booked)


def _visit(week: int) -> Visit:
    # It closes before the hour at which planning looks.
    closed = BEGAN + timedelta(weeks=week) - timedelta(hours=1)
    return Visit(f"V{week}", closed - timedelta(hours=1), closed)


def test_the_rule_on_arrays_decides_as_decide_does() -> None:
    """Random visits, bookings and due items over a year: each week of each phone is asked both ways."""
    random, rules = np.random.default_rng(5), ShopRules(asks_after_visit=False)
    shop = replace(car().shop, rules=rules)
    told = Told.nobody(PHONES, rules)
    invites: list[list[EarlierInvite]] = [[] for _ in range(PHONES)]
    visited: list[int | None] = [None] * PHONES
    due, legal = np.zeros(PHONES, dtype=bool), np.zeros(PHONES, dtype=bool)
    booked_until = np.full(PHONES, -1)
    sent_at_all = legal_at_all = 0
    for week in range(WEEKS):
        day = float((BEGAN + timedelta(weeks=week)).date().toordinal())
        came = np.nonzero((random.random(PHONES) < 0.06) | (booked_until == week))[0]
        for phone in came.tolist():
            visited[phone] = week
        told.note_visits(day, came)
        due[came] = legal[came] = False
        due |= random.random(PHONES) < 0.15
        legal |= due & (random.random(PHONES) < 0.05)
        is_booked = booked_until > week
        sent = told.may_send(day, due, legal, is_booked)
        for phone in range(PHONES):
            seen = visited[phone]
            picture = _picture(week, seen, invites[phone], bool(due[phone]), bool(legal[phone]), bool(is_booked[phone]))
            decided = decide(replace(picture, shop=shop), BEGAN + timedelta(weeks=week))
            assert (decided.text is not None) == sent[phone], (week, phone, decided)
            if decided.text:
                assert decided.text.is_legal == legal[phone]
                at = BEGAN + timedelta(weeks=week)
                text = decided.text
                invites[phone].append(EarlierInvite(text.reason, text.raised_by, text.try_number, at, "C1", text.items))
        told.note_texts(day, sent, legal)
        booked_until = np.where(sent & (random.random(PHONES) < 0.2), week + 3, booked_until)
        sent_at_all, legal_at_all = sent_at_all + int(sent.sum()), legal_at_all + int((sent & legal).sum())
    assert sent_at_all > 100 and legal_at_all > 20


@pytest.mark.parametrize("way", [AS_SHIPPED, plain(0.1), plain(0.5)], ids=lambda way: way.name)
def test_the_day_of_a_text_is_where_a_car_becomes_worth_it(way: Policy) -> None:
    """By the windows that the shop keeps: days before, the car's tires and pads are not worth a text; days after, they
    are."""
    fleet = build_fleet(replace(AS_PUBLISHED, winter_share=0.0), 60, 3)
    histories = fleet.histories()
    rules, compared = way.rules, 0
    days, _ = text_days(histories, [rules] * len(histories))
    windows = forecast_cars(histories, "last", with_near=True)
    for history, day in zip(histories, days.tolist(), strict=True):
        mine = [
            one for one in windows if one.vehicle == history.vehicle.code and one.item in ("tire_tread", "brake_pad")
        ]
        if not mine or not np.isfinite(day):
            continue
        compared += 1
        ahead = day + rules.lead_days - mine[0].as_of.toordinal()
        # A kept curve is read along straight lines: at small chances, years ahead, that is some days early.
        around = max(2.0, 0.01 * ahead)
        assert _are_worth(mine, day + around, rules)
        if ahead > around:
            assert not _are_worth(mine, day - around, rules)
    assert compared > 30


def _are_worth(windows: list[DueWindow], day: float, rules: ShopRules) -> bool:
    """As the planner asks of a car's windows that day."""
    worn = [WornAhead(one.curve, one.near, day - one.as_of.toordinal()) for one in windows if one.near is not None]
    assert len(worn) == len(windows)
    return worn_are_worth_a_text([one.on(rules.lead_days, rules) for one in worn], rules)


def test_all_ways_meet_the_same_cars_until_their_texts_part_them() -> None:
    """Without answers every way is the same: texts alone change no car."""
    nobody = People(books=(0.0, 0.0))
    ways = (Policy("none", "none"), Policy("six-month reminder", "reminder"), Policy("oracle", "oracle"))
    found = compare(60, (3,), lambda _: None, ways, nobody).counts
    assert found.prompted.sum() == 0 and found.texts[1] > 0 and found.texts[2] > 0
    assert found.own[0] == found.own[1] == found.own[2]
    assert found.overdue_days[0] == found.overdue_days[1] == found.overdue_days[2]


def test_an_oracle_that_everybody_follows_leaves_little_overdue_and_wastes_nothing() -> None:
    everybody = People(books=(1.0, 1.0), lead_spread=0.0)
    ways = (Policy("none", "none"), Policy("oracle", "oracle"))
    found = compare(150, (3,), lambda _: None, ways, everybody).counts
    assert found.wasted[1] == 0 and found.prompted[1] > 0
    # New customers are unknown until they come; what is left are tires and brakes past their limit when they do, and
    # those that the fourteen days after a visit rest.
    assert found.overdue_days[1] < 0.35 * found.overdue_days[0]


def test_parts_that_one_way_has_replaced_are_those_that_the_other_is_given() -> None:
    world = build_world(30, (3,), 20, People())
    cars = LivedCars.begin(world, 2)
    cars.live_a_week()
    # Everything of customer 4 is read at its limit, in one way this week, in the other the next.
    for way in (0, 1):
        read = cars.read()
        read.value[:] = 0.0
        cars.do(np.array([4 + 30 * way]), read)
        if way == 0:
            first = cars.kinds[0].new[4].copy(), cars.kinds[1].of_part[4].copy()
            cars.live_a_week()
    assert (cars.kinds[0].new[34] == first[0]).all() and (cars.kinds[1].of_part[34] == first[1]).all()


def test_every_day_overdue_has_a_reason_and_an_oracle_is_never_silent() -> None:
    """By what is measured: the reasons are all of it, and what is overdue untold is known to no oracle."""
    ways = (Policy("none", "none"), Policy("oracle", "oracle"))
    found = compare(150, (3,), lambda _: None, ways).counts
    assert found.why.sum(axis=0) == pytest.approx(found.overdue_days)
    unseen, untold = WHY.index("never seen"), WHY.index("not told since the last visit")
    assert (found.why[unseen, 0] == found.why[unseen, 1]).all(), "who never came is the same for all"
    # An oracle is silent only for the fourteen days after a visit, and where the caps of earlier texts hold.
    assert 0 < found.why[untold, 1] < 0.02 * found.why[untold, 0]


def test_a_reminder_each_half_year_writes_on_where_the_other_has_fallen_silent() -> None:
    nobody = People(own_visits_a_year=0.3, books=(0.0, 0.0))
    ways = (Policy("once", "reminder"), Policy("each", "repeated"))
    once, each = compare(60, (3,), lambda _: None, ways, nobody).counts.texts
    assert each > 2 * once > 0


def test_the_world_is_the_same_for_the_same_seeds() -> None:
    one, other = (build_world(25, (3, 4), 30, People()) for _ in range(2))
    assert (one.miles == other.miles).all() and (one.tires.value == other.tires.value).all()
    assert one.vehicles[0].first_used_on == other.vehicles[0].first_used_on
    assert isinstance(one.vehicles[0].first_used_on, date)
    assert one.customers == 50 and set(one.seed.tolist()) == {0, 1}


def test_bench_policies_prints_its_table(tmp_path: Path) -> None:
    """Few customers: figures stray, so only their presence is asked."""
    to = tmp_path / "figures.json"
    ran = CliRunner().invoke(bench, ["policies", "--customers", "20", "--seed", "11", "--json", str(to)])
    assert ran.exit_code in (0, 1), ran.output
    checks = [one["check"] for one in json.loads(to.read_text())]
    assert "a customer-year, oracle" in checks and "a customer-year, ours as shipped" in checks
    assert "11, 12, 13" in ran.stdout
