"""Years of a simulated shop, here a few weeks of a few cars: what the command prints, and that the judge does look."""

from __future__ import annotations

import json
from datetime import timedelta
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from click.testing import CliRunner

from followup.cli.simulate import simulate
from followup.phone_numbers import read_number
from followup.rehearsal.faults.fate import ANSWERED
from followup.rehearsal.week.customers import Habits
from followup.rehearsal.week.promises import broken_promises
from followup.rehearsal.week.shop_life import SimulatedShop
from followup.rehearsal.years.crowd import MOST, phone_of
from followup.rehearsal.years.fleet import KNOWN_WEEKS, LivingFleet
from followup.rehearsal.years.life import EVERY, HABITS, MANNERS, WITHOUT
from followup.rehearsal.years.opening import begins_at, open_shop
from followup.storage import requests


@pytest.fixture(scope="module")
def ran(tmp_path_factory: pytest.TempPathFactory) -> tuple[str, list[dict[str, object]]]:
    to = tmp_path_factory.mktemp("simulate") / "ways.json"
    asked = ["--cars", "20", "--years", "0.04", "--seed", "5", "--faults", "--json", str(to)]
    done = CliRunner().invoke(simulate, asked)
    assert done.exit_code == 0, done.output
    return done.stdout, json.loads(to.read_text(encoding="utf-8"))


def test_the_command_prints_our_shop_beside_the_others(ran: tuple[str, list[dict[str, object]]]) -> None:
    told, ways = ran
    assert "20 cars, 2 weeks, seed 5, with faults" in told and "broken 0" in told and "█" in told
    assert "over HTTP what went wrong, and one in 8 of the rest" in told
    names = [one["policy"] for one in ways]
    assert names[0] == "ours, as lived by the program"
    assert {"none", "six-month reminder", "mileage guess", "oracle"} < set(names)
    keys = {"policy", "texts_per_customer_year", "wasted", "overdue_days", "broken_promises"}
    assert all(set(one) == keys for one in ways)
    assert ways[0]["broken_promises"] == 0
    nobody = next(one for one in ways if one["policy"] == "none")
    assert nobody["texts_per_customer_year"] == 0 and nobody["broken_promises"] is None


def test_our_shop_has_lived(ran: tuple[str, list[dict[str, object]]]) -> None:
    ours = ran[1][0]
    assert float(str(ours["texts_per_customer_year"])) > 0 and float(str(ours["overdue_days"])) > 0


def test_every_number_is_invented_and_nobodys_twice() -> None:
    """555-0100 to 555-0199 are kept free for invented numbers in every area (North American Numbering Plan)."""
    numbers = [phone_of(customer) for customer in range(MOST)]
    assert len(set(numbers)) == MOST
    assert all(one[5:10] == "55501" and read_number(one, "US").e164 == one for one in numbers)


def test_parts_wear_and_are_done_at_a_visit() -> None:
    fleet = LivingFleet.drawn(30, 20, 3)
    lines = fleet.live_before()
    assert {line["customer"]["id"] for line in lines} == {f"C-{car}" for car in range(30)}
    assert fleet.cars.week == KNOWN_WEEKS - 1
    before = fleet.cars.value.copy()
    fleet.live_a_week()
    assert (fleet.cars.value <= before).all() and (fleet.cars.value < before).any()
    for parts in fleet.cars.kinds:
        parts.value[4] = 1.0
    line = fleet.visit(4, "a visit", "2024-01-08T10:00", is_prompted=True)
    assert {(one["item"], one.get("position")) for one in line["work_done"] if one["did"] == "replaced"} == {
        (item, axle) for item in ("tire_tread", "brake_pad") for axle in ("front", "rear")
    }
    assert (fleet.cars.value[4] > 5).all()
    assert (fleet.counted.prompted, fleet.counted.idle, fleet.counted.wasted, fleet.counted.own) == (1, 0, 0, 0)
    assert np.isclose(fleet.counted.overdue_days % 7, 0)


def test_the_judge_of_a_day_sees_what_is_broken_on_that_day(tmp_path: Path) -> None:
    """An invite of yesterday to somebody who agreed to nothing is found by the look at the last three days."""
    fleet = LivingFleet.drawn(40, 2, 9)
    premises, begins = open_shop(tmp_path, fleet, lambda _: None), begins_at(fleet)
    with SimulatedShop(
        premises, 9, begins, habits=HABITS, manners=MANNERS, faulty=0.0, without=("learn", "score")
    ) as shop:
        # The first day is a holiday.
        shop.live(begins + timedelta(days=2))
        it = shop.recorded(shop.world.at - timedelta(days=3))
        assert broken_promises(it) == []
        post, row = it.taken("invite")[0]
        it.ledger[row["number"]] = []
        found = broken_promises(it)
        assert {one.promise for one in found} == {"consent"}
        # Named, so that it can be looked up.
        assert f"consent: {post.to}: {post.at:%Y-%m-%d %H:%M:%S} UTC: invite" in found[0].in_words
        later = shop.recorded(shop.world.at + timedelta(days=60))
        # Bookings are read of the days that are judged alone: one advisor cannot check two cars in at once.
        for days, is_seen in ((-10, False), (-1, True), (20, True)):
            since, at = shop.world.at - timedelta(days=3), shop.world.at + timedelta(days=days)
            with shop.store.write() as connection:
                for car in (1, 2):
                    requests.add_request(
                        connection, at, "a test", shop_id=shop.shop_id, person_id=car, vehicle_id=car,
                        state="confirmed", came_from="phone", slot_at=at, parts="not_needed",
                    )  # fmt: skip
            told = [one for one in broken_promises(shop.recorded(since)) if one.promise == "capacity"]
            assert any(one.at == at for one in told) is is_seen
            assert any(one.at == at for one in broken_promises(shop.recorded()))
    # Nothing left since then, so nothing is judged of it.
    assert it.posts and post not in later.posts


def test_without_web_a_shop_lives_by_the_workflows_behind_the_hooks(tmp_path: Path) -> None:
    """Texts leave, are reported and answered, and nothing that was promised is broken."""
    fleet = LivingFleet.drawn(12, 2, 9)
    premises, begins = open_shop(tmp_path, fleet, lambda _: None), begins_at(fleet)
    with SimulatedShop(
        premises, 9, begins, habits=Habits(answers=1.0, unasked_a_day=0.2), manners=MANNERS, faulty=0.0,
        without=WITHOUT, every=EVERY, one_in=0,
    ) as shop:  # fmt: skip
        shop.live(begins + timedelta(days=4))
        it = shop.recorded()
    assert broken_promises(it) == []
    assert it.taken("invite") and it.taken("answer") and it.reported
    assert it.written and all(one.acknowledged_at for one in it.written)
    assert {row["provider_id"] for row in it.inbound} == {one.sid for one in it.written}
    assert all(row["delivery"] for row in it.texts if row["public_id"] in it.reported)


def test_what_goes_wrong_goes_over_the_wire_and_a_share_of_the_rest(tmp_path: Path) -> None:
    """Every text is taken as it was fated, whether it went by HTTP or by a call; hooks are shared out likewise."""
    fleet = LivingFleet.drawn(12, 1, 9)
    premises, begins = open_shop(tmp_path, fleet, lambda _: None), begins_at(fleet)
    with SimulatedShop(
        premises, 9, begins, habits=Habits(answers=1.0, unasked_a_day=0.2), manners=MANNERS, faulty=1.0,
        without=WITHOUT, every=EVERY, one_in=3,
    ) as shop:  # fmt: skip
        over_http: list[int] = []
        by_form = shop.provider._handler.do_POST

        def do_post(handler: Any) -> None:
            over_http.append(len(shop.provider.posts))
            by_form(handler)

        shop.provider._handler.do_POST = do_post  # type: ignore[method-assign]  # counted, and done as ever
        shop.live(begins + timedelta(days=2))
        it = shop.recorded()
    assert broken_promises(it) == []
    wrong = {number for number, post in enumerate(it.posts) if post.fate.how != ANSWERED}
    assert wrong and wrong <= set(over_http)
    as_it_should = set(range(len(it.posts))) - wrong
    assert 0 < len(as_it_should & set(over_http)) < len(as_it_should)


def test_faults_of_the_network_need_the_network() -> None:
    done = CliRunner().invoke(simulate, ["--cars", "20", "--faults", "--without-web"])
    assert done.exit_code == 2 and "network" in done.output
