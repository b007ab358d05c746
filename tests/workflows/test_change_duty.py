"""The duty roster: gaps are found, versions lead back, nobody is named who cannot be told.

Source: this project's own rule that `followup doctor` fails while an open hour has nobody; 2026-11-26 is Thanksgiving
(5 U.S.C. 6103), on which the shop is closed.
"""

from __future__ import annotations

from datetime import UTC, datetime

import pytest

from followup.core.duty import Roster, Watch
from followup.core.shop import WEEKDAYS
from followup.core.wall import to_wall
from followup.storage import shops, staff
from followup.storage.store import Store, make_engine
from followup.workflows.change_duty import bring_duty_back, change_duty
from followup.workflows.look_at_duty import look_at_duty
from tests.shop_of_tests import add_shop

NOW = datetime(2026, 11, 24, 15, 0, tzinfo=UTC)
NOOR, JONAH, THEO, INES = 1, 2, 3, 4


@pytest.fixture
def store(database_url: str) -> Store:
    """A shop with two advisors, a manager and an owner."""
    store = Store(make_engine(database_url))
    shop_id = add_shop(store)
    people = (("noor", "advisor"), ("jonah", "advisor"), ("theo", "manager"), ("ines", "owner"))
    with store.write() as connection:
        for login, role in people:
            staff.add(connection, shop_id, login, login.title(), role, "no password", NOW)  # type: ignore[arg-type]  # roles of the list above
        staff.set_alert_phone(connection, NOOR, "+13125550120")
    return store


def roster(*watches: Watch, days: tuple[str, ...] = WEEKDAYS) -> Roster:
    return Roster(dict.fromkeys(days, watches), THEO, INES, None)


WHOLE = Watch("07:00", "18:30", (NOOR, JONAH))


def test_an_empty_roster_has_every_open_hour_as_a_gap(store: Store) -> None:
    seen = look_at_duty(store, 1, NOW)
    # Two weeks from that Tuesday on: twelve days of the opening hours, less Thanksgiving.
    assert len(seen.gaps) == 11
    assert seen.silent == {JONAH, THEO, INES}


def test_hours_at_the_edge_are_gaps(store: Store) -> None:
    change_duty(store, 1, roster(Watch("08:00", "12:00", (NOOR,)), Watch("13:00", "18:00", (JONAH,))), 0, "Theo", NOW)
    seen = look_at_duty(store, 1, NOW)
    today = [
        (f"{to_wall(gap.from_at, seen.shop.zone):%H:%M}", f"{to_wall(gap.to_at, seen.shop.zone):%H:%M}")
        for gap in seen.gaps
        if gap.day == seen.gaps[0].day
    ]
    assert today == [("07:30", "08:00"), ("12:00", "13:00")]


def test_somebody_who_left_watches_nothing(store: Store) -> None:
    change_duty(store, 1, roster(Watch("07:00", "18:30", (JONAH,))), 0, "Theo", NOW)
    assert look_at_duty(store, 1, NOW).gaps == ()
    with store.write() as connection:
        staff.set_active(connection, JONAH, False)
    seen = look_at_duty(store, 1, NOW)
    assert (len(seen.gaps), seen.left) == (11, ("Jonah",))
    # And nobody can name them again.
    wrong = change_duty(store, 1, roster(Watch("07:00", "18:30", (JONAH,))), 1, "Theo", NOW).wrong
    assert set(wrong) == set(WEEKDAYS)


def test_versions_lead_back(store: Store) -> None:
    assert change_duty(store, 1, roster(WHOLE), 0, "Theo", NOW).version == 1
    assert change_duty(store, 1, roster(), 1, "Theo", NOW).version == 2
    assert bring_duty_back(store, 1, 1, 2, "Ines", NOW).version == 3
    with store.read() as connection:
        assert shops.load_roster(connection, 1) == roster(WHOLE)
    seen = look_at_duty(store, 1, NOW)
    assert [(one.number, one.author) for one in seen.versions] == [(3, "Ines"), (2, "Theo"), (1, "Theo")]
    assert seen.gaps == ()
    with pytest.raises(LookupError):
        bring_duty_back(store, 1, 9, 3, "Ines", NOW)


def test_two_at_the_same_time_do_not_undo_each_other(store: Store) -> None:
    change_duty(store, 1, roster(WHOLE), 0, "Theo", NOW)
    assert "meantime" in change_duty(store, 1, roster(), 0, "Ines", NOW).wrong[""]


@pytest.mark.parametrize(
    ("watches", "says"),
    [
        ((Watch("12:00", "12:00", (NOOR,)),), "later"),
        ((Watch("08:00", "13:00", (NOOR,)), Watch("12:00", "18:00", (JONAH,))), "overlap"),
        ((Watch("08:00", "13:00", ()),), "first"),
        ((Watch("08:00", "13:00", (NOOR, NOOR)),), "twice"),
        ((Watch("08:00", "13:00", (77,)),), "closed"),
    ],
)
def test_what_cannot_be_is_refused_in_words(store: Store, watches: tuple[Watch, ...], says: str) -> None:
    done = change_duty(store, 1, roster(*watches, days=("mon",)), 0, "Theo", NOW)
    assert done.version is None
    assert says in done.wrong["mon"]


def test_an_advisor_is_nobodys_manager(store: Store) -> None:
    done = change_duty(store, 1, Roster({}, NOOR, THEO, None), 0, "Theo", NOW)
    assert set(done.wrong) == {"manager", "owner"}
