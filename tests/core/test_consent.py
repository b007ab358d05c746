"""The consent ledger: what counts, what a stop takes, what gives it back; and the consent each reason names.

47 CFR 64.1200(a)(10) (taking it back), (a)(12) (one confirmation, asking which kinds), (f)(9) (written agreement).
"""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from followup.core.consent import HOW, ConsentEntry, Event, covers_of_grant, standing
from followup.core.text import COVERS, REASONS

NOON = datetime(2026, 3, 10, 18, 0, tzinfo=UTC)
ALL = ("visits", "upkeep", "offers")


def entry(event: Event, days: float = 0.0, covers: tuple[str, ...] = ALL, **more: Any) -> ConsentEntry:
    """A line kept so many days after the first noon, given on that day by tablet, own and adult."""
    at = NOON + timedelta(days=days)
    usual: dict[str, Any] = {"how": "tablet", "words": f"words of {at:%F}", "is_own_and_adult": True}
    return ConsentEntry("+13125550147", event, covers, at, **({"given_on": at.date()} | usual | more))


def covers_after(*ledger: ConsentEntry) -> set[str]:
    """What stands in the end."""
    return set(standing(ledger).covers)


def test_a_new_number_starts_without() -> None:
    now = standing(())
    assert not now.is_stopped and not any(now.allows(cover) for cover in COVERS)
    assert now.allows(None), "an answer needs only that no stop stands"


@pytest.mark.parametrize(
    ("how", "own", "given"),
    [
        ("tablet", True, set(ALL)),
        ("signed_paper", True, set(ALL)),
        ("text_in", True, set(ALL)),
        ("tablet", False, {"visits"}),
        ("spoken", True, {"visits"}),
        ("imported_unproven", True, set()),
    ],
)
def test_what_each_way_of_giving_it_covers(how: str, own: bool, given: set[str]) -> None:
    # 47 CFR 64.1200(f)(9): marketing needs a written, signed agreement; spoken words and unproven lists are none.
    assert covers_after(entry("given", how=how, is_own_and_adult=own)) == given


def test_unknown_covers_count_for_nothing() -> None:
    assert covers_of_grant(entry("given", covers=("visits", "everything"))) == {"visits"}


def test_consents_add_up_and_are_narrowed() -> None:
    first, second = entry("given", 0, ("visits",)), entry("given", 1, ("upkeep", "offers"))
    assert covers_after(first, second) == set(ALL)
    assert covers_after(first, second, entry("narrowed", 2, ("offers",))) == {"visits", "upkeep"}


def test_a_stop_takes_all_covers_whatever_else_was_given_before() -> None:
    # 64.1200(a)(10): any reasonable way, at once.
    now = standing((entry("given", 0), entry("taken_back", 1)))
    assert now.is_stopped and not any(now.allows(cover) for cover in (*COVERS, None))


def test_start_gives_back_what_stood_at_the_stop_and_no_more() -> None:
    given, narrowed, stop = entry("given", 0), entry("narrowed", 1, ("offers",)), entry("taken_back", 2)
    assert covers_after(given, narrowed, stop, entry("given_again", 3)) == {"visits", "upkeep"}
    assert covers_after(given, stop, entry("taken_back", 2.5), entry("given_again", 3)) == set(ALL)
    assert covers_after(given, stop, entry("narrowed", 2.5, ("upkeep", "offers")), entry("given_again", 3)) == {
        "visits"
    }
    assert covers_after(entry("given_again", 0)) == set(), "START of a number that never agreed gives nothing"


def test_importing_an_old_line_again_revives_nothing() -> None:
    given, stop = entry("given", 0), entry("taken_back", 5)
    again = entry("given", 9, given_on=given.given_on, words=given.words, how="signed_paper")
    assert standing((given, stop, again)).is_stopped
    unseen = entry("given", 9, given_on=date(2026, 3, 1), words="an older paper", how="signed_paper")
    assert standing((given, stop, unseen)).is_stopped, "it was given before the stop"


def test_a_stop_wins_on_its_own_day_unless_the_hour_is_known() -> None:
    stop = entry("taken_back", 5)
    paper = entry("given", 5.1, how="signed_paper", given_on=stop.given_on, words="paper")
    assert standing((stop, paper)).is_stopped, "nobody knows at which hour the paper was signed"
    tablet = entry("given", 5.1, given_on=stop.given_on, words="tablet")
    assert covers_after(stop, tablet) == set(ALL)
    same_instant = entry("given", 5, words="tablet")
    assert standing((same_instant, stop)).is_stopped
    assert standing((stop, same_instant)).is_stopped, "the order of the lines does not matter"


def test_a_new_consent_after_a_stop_gives_only_what_it_says() -> None:
    ledger = (entry("given", 0), entry("taken_back", 5), entry("given", 9, ("visits",)))
    assert covers_after(*ledger) == {"visits"} and not standing(ledger).is_stopped


@pytest.mark.parametrize("how", ["imported_unproven"])
def test_what_proves_nothing_lifts_no_stop(how: str) -> None:
    assert standing((entry("given", 0), entry("taken_back", 5), entry("given", 9, how=how))).is_stopped


def test_every_reason_names_the_consent_that_it_needs() -> None:
    for one in REASONS:
        if one.kind == "answer":
            assert one.cover is None, one.code
        else:
            assert one.cover in COVERS, one.code
        if one.kind == "visit":
            assert one.cover == "visits", one.code
        if one.kind == "invite":
            # Due work and free top-offs are treated as marketing: spoken consent is never enough.
            assert one.cover != "visits" and one.offers_way_out, one.code
            spoken = standing((entry("given", how="spoken"),))
            assert not spoken.allows(one.cover), one.code
    assert {one.code for one in REASONS if one.cover == "offers"} == {"free_service", "winter_top_off", "long_unseen"}


lines = st.builds(
    entry,
    st.sampled_from(["given", "narrowed", "taken_back", "given_again"]),
    st.integers(0, 30),
    st.lists(st.sampled_from(ALL), min_size=1, max_size=3, unique=True).map(tuple),
    how=st.sampled_from(HOW),
)


@given(st.lists(lines, max_size=8), st.permutations(range(8)))
def test_the_order_in_which_lines_are_read_does_not_matter(ledger: list[ConsentEntry], order: list[int]) -> None:
    kept = {(one.at, one.event == "taken_back"): one for one in ledger}  # instants differ, as in a store
    found = list(kept.values())
    shuffled = [found[n] for n in order if n < len(found)]
    assert standing(found) == standing(shuffled)


@given(st.lists(lines, max_size=8))
def test_after_a_stop_nothing_is_left_whatever_came_before(ledger: list[ConsentEntry]) -> None:
    now = standing([*ledger, entry("taken_back", 31)])
    assert now.is_stopped and now.covers == frozenset()
    reimported = [entry("given", 40 + n, given_on=one.given_on, words=one.words) for n, one in enumerate(ledger)]
    assert standing([*ledger, entry("taken_back", 31), *reimported]).is_stopped
