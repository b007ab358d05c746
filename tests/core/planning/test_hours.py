"""Hours to the second, every zone at once, states, Sundays, holidays, and the two days on which clocks change."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from followup.core.planning.hours import LEGAL_FROM, LEGAL_TO, Where, lands_by, may_leave, next_moment
from followup.core.planning.state_hours import STATE_HOURS
from followup.core.shop import WEEKDAYS, Shop, ShopRules
from tests.core.planning.cars import SHOP

# A shop that has widened everything as far as anybody may: what is left is the law.
WIDE = ShopRules(
    invite_hours=dict.fromkeys(WEEKDAYS, ("00:00", "23:59")),
    visit_text_hours=dict.fromkeys(WEEKDAYS, ("00:00", "23:59")),
)
WIDE_SHOP = replace(SHOP, rules=WIDE)


def at(wall: str, zone: str = "America/Chicago") -> datetime:
    """The instant of a wall time in that zone."""
    return datetime.fromisoformat(wall).replace(tzinfo=ZoneInfo(zone)).astimezone(UTC)


@pytest.mark.parametrize("kind", ["invite", "visit"])
@pytest.mark.parametrize(
    ("clock", "may"), [("07:59:59", False), ("08:00:00", True), ("20:59:59", True), ("21:00:00", False)]
)
def test_no_hours_of_a_shop_reach_beyond_the_law(kind: str, clock: str, may: bool) -> None:
    # 47 CFR 64.1200(c)(1): not before 8 a.m. or after 9 p.m. at the called party's location.
    assert may_leave(kind, at(f"2026-03-10T{clock}"), WIDE_SHOP, Where()).may is may


@pytest.mark.parametrize(
    ("kind", "wall", "may"),
    [
        # The shop's defaults (this project's own, narrower than the law): Monday to Friday, Saturday, Sunday.
        ("invite", "2026-03-10T09:59:59", False),
        ("invite", "2026-03-10T10:00:00", True),
        ("invite", "2026-03-10T17:59:59", True),
        ("invite", "2026-03-10T18:00:00", False),
        ("invite", "2026-03-14T16:59:59", True),
        ("invite", "2026-03-14T17:00:00", False),
        ("invite", "2026-03-15T12:00:00", False),
        ("visit", "2026-03-15T08:00:00", True),
        ("visit", "2026-03-15T19:59:59", True),
        ("visit", "2026-03-15T20:00:00", False),
        ("answer", "2026-03-15T03:00:00", True),
    ],
)
def test_default_hours_of_the_three_kinds(kind: str, wall: str, may: bool) -> None:
    assert may_leave(kind, at(wall), SHOP, Where(("America/Chicago",))).may is may


def test_no_invite_on_a_holiday_but_visit_texts_leave() -> None:
    # 5 U.S.C. 6103(a): Thanksgiving is the fourth Thursday of November, in 2026 the 26th.
    noon = at("2026-11-26T12:00")
    assert not may_leave("invite", noon, SHOP, Where()).may
    assert "Thanksgiving" in may_leave("invite", noon, SHOP, Where()).says
    assert may_leave("visit", noon, SHOP, Where()).may


def test_widening_the_hours_opens_no_sunday() -> None:
    assert not may_leave("invite", at("2026-03-15T12:00"), WIDE_SHOP, Where()).may


def test_the_window_must_be_open_in_every_candidate_zone() -> None:
    # An area code that spans Eastern and Central: 10:00 Eastern is 9:00 Central.
    both = Where(("America/New_York", "America/Chicago"))
    assert not may_leave("invite", at("2026-03-10T10:30", "America/New_York"), SHOP, both).may
    assert may_leave("invite", at("2026-03-10T10:00"), SHOP, both).may
    assert not may_leave("invite", at("2026-03-10T17:00"), SHOP, both).may, "18:00 in New York"
    assert next_moment("invite", at("2026-03-10T05:00"), SHOP, both) == at("2026-03-10T10:00")
    assert lands_by("invite", at("2026-03-10T12:00"), SHOP, both) == at("2026-03-10T17:00")


def test_a_text_lands_by_the_end_of_the_hours_in_which_it_left() -> None:
    assert lands_by("invite", at("2026-03-10T10:00"), SHOP, Where()) == at("2026-03-10T18:00")
    assert lands_by("invite", at("2026-03-10T18:00"), SHOP, Where()) is None
    assert lands_by("invite", at("2026-03-10T09:59"), SHOP, Where()) is None
    night = at("2026-03-10T03:00")
    assert lands_by("answer", night, SHOP, Where()) == night + timedelta(minutes=30)


def test_the_shops_own_zone_counts_beside_the_numbers() -> None:
    hawaii = Where(("Pacific/Honolulu",))  # five hours behind Chicago in summer time
    assert next_moment("invite", at("2026-03-10T10:00"), SHOP, hawaii) == at("2026-03-10T15:00")


def test_unknown_zones_are_the_shops_alone() -> None:
    assert next_moment("invite", at("2026-03-10T05:00"), SHOP, Where()) == at("2026-03-10T10:00")


def test_no_common_hour_is_held() -> None:
    tokyo = Where(("Asia/Tokyo",))
    assert next_moment("invite", at("2026-03-10T05:00"), SHOP, tokyo) is None
    assert next_moment("answer", at("2026-03-10T05:00"), SHOP, tokyo) == at("2026-03-10T05:00")


@pytest.mark.parametrize(
    ("state", "wall", "may"),
    [
        # Fla. Stat. 501.059 and OR HB 3865: 8 a.m. to 8 p.m.
        ("FL", "2026-03-10T19:59:59", True),
        ("FL", "2026-03-10T20:00:00", False),
        ("OR", "2026-03-10T20:00:00", False),
        # Dialing guides: KY from 10, CT and NV to 20, RI weekdays 9-18.
        ("KY", "2026-03-10T09:59:59", False),
        ("KY", "2026-03-10T10:00:00", True),
        ("CT", "2026-03-10T20:00:00", False),
        ("NV", "2026-03-10T08:59:59", False),
        ("RI", "2026-03-10T18:00:00", False),
        ("IL", "2026-03-10T20:30:00", True),
        # From memory: TX on Sundays from noon.
        ("TX", "2026-03-15T11:59:59", False),
        ("TX", "2026-03-15T12:00:00", True),
    ],
)
def test_states_narrow_the_shops_hours_and_the_numbers(state: str, wall: str, may: bool) -> None:
    assert may_leave("visit", at(wall), replace(WIDE_SHOP, state=state), Where()).may is may
    assert may_leave("visit", at(wall), WIDE_SHOP, Where(state=state)).may is may


def test_rhode_island_takes_no_invite_on_a_saturday() -> None:
    # Dialing guides: weekdays only.
    assert may_leave("invite", at("2026-03-14T12:00"), SHOP, Where()).may
    assert not may_leave("invite", at("2026-03-14T12:00"), SHOP, Where(state="RI")).may


def test_every_state_row_narrows_and_names_its_source() -> None:
    for row in STATE_HOURS:
        assert LEGAL_FROM <= row.opens < row.closes <= LEGAL_TO, row.state
        assert row.source and row.checked_on.year >= 2026, row.state
        is_narrower = (row.opens, row.closes) != (LEGAL_FROM, LEGAL_TO) or row.days
        assert is_narrower, row.state
    assert len({row.state for row in STATE_HOURS}) == len(STATE_HOURS)


@pytest.mark.parametrize(
    ("before", "opens"),
    [
        # 15 U.S.C. 260a: clocks change on 8 March and 1 November 2026; both are Sundays, on which visit texts leave.
        ("2026-03-07T21:00:00-06:00", "2026-03-08T13:00:00+00:00"),
        ("2026-10-31T21:00:00-05:00", "2026-11-01T14:00:00+00:00"),
    ],
)
def test_eight_is_eight_on_the_days_on_which_clocks_change(before: str, opens: str) -> None:
    found = next_moment("visit", datetime.fromisoformat(before).astimezone(UTC), SHOP, Where())
    assert found == datetime.fromisoformat(opens)
    assert found.astimezone(ZoneInfo(SHOP.zone)).hour == 8


ZONES = ("America/New_York", "America/Chicago", "America/Phoenix", "America/Los_Angeles", "Pacific/Honolulu")
FIRST = datetime(2026, 1, 1, tzinfo=UTC)
instants = st.integers(0, 700 * 86_400).map(lambda seconds: FIRST + timedelta(seconds=seconds))
wheres = st.builds(
    Where, st.lists(st.sampled_from(ZONES), max_size=3).map(tuple), st.sampled_from([None, "FL", "KY", "RI", "TX"])
)
shops = st.sampled_from([SHOP, WIDE_SHOP, replace(SHOP, state="RI"), replace(SHOP, zone="America/New_York")])


@given(st.sampled_from(["invite", "visit", "answer"]), instants, shops, wheres)
def test_next_moment_is_allowed_and_none_is_earlier(kind: str, after: datetime, shop: Shop, where: Where) -> None:
    found = next_moment(kind, after, shop, where)
    assert found is not None, "these zones have an hour in common"
    assert found >= after
    assert may_leave(kind, found, shop, where).may
    if found > after:
        assert not may_leave(kind, found - timedelta(seconds=1), shop, where).may
        assert not may_leave(kind, after + (found - after) / 2, shop, where).may


@given(st.sampled_from(["invite", "visit"]), instants, shops, wheres)
def test_whatever_leaves_is_between_eight_and_nine_where_it_lands(
    kind: str, when: datetime, shop: Shop, where: Where
) -> None:
    # 47 CFR 64.1200(c)(1), worked out here by the wall clock instead of by spans of instants.
    if may_leave(kind, when, shop, where).may:
        for zone in (shop.zone, *where.zones):
            local = when.astimezone(ZoneInfo(zone))
            assert 8 <= local.hour < 21
            assert kind == "visit" or local.weekday() != 6
        until = lands_by(kind, when, shop, where)
        assert until is not None and until > when
        assert not may_leave(kind, until, shop, where).may
