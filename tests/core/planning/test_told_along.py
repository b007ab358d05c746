"""An advisory starts no text about paid work; one is told in an invite that leaves anyway (the trade joins visits)."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from typing import Any

import pytest

from followup.core.advisories import Advisory, advisories_of
from followup.core.planning.decide import decide, still_wanted
from followup.core.planning.picture import CarPicture, DueItem, Rest
from followup.core.shop import ShopRules
from followup.core.visit import Recommendation, Work
from tests.core.advisories.cars import ALL_WHEEL, CAR, pad, tread
from tests.core.planning.cars import DUE_TIRE, FAR_PAD, LOW_WASHER, MEASURED_ON, NOW, car

ALIGNMENT = ("alignment", "")
DUE_PAD = DueItem("brake_pad", "front_left", 0.4, 0.7, MEASURED_ON, date(2026, 4, 1))
UNEVEN_TIRE = tread("rear_left", 7, 7, 3, on=MEASURED_ON)
UNEVEN_PADS = pad("front_left", inner=4, outer=8, on=MEASURED_ON)


def _advised(*readings: Any, of: Any = CAR, work: tuple[Work, ...] = ()) -> tuple[Advisory, ...]:
    return advisories_of(of, readings, work, ShopRules(), NOW.date())


def _with(*readings: Any, **changes: Any) -> CarPicture:
    return car(advisories=_advised(*readings), **changes)


def test_an_advisory_alone_starts_no_text() -> None:
    assert decide(_with(UNEVEN_TIRE, UNEVEN_PADS, due=(FAR_PAD,)), NOW).text is None
    assert decide(_with(UNEVEN_TIRE, UNEVEN_PADS, due=()), NOW).text is None


def test_whether_when_and_why_there_is_a_text_never_hangs_on_it() -> None:
    without, along = decide(car(), NOW).text, decide(_with(UNEVEN_TIRE), NOW).text
    assert without is not None
    assert along is not None
    same = ("reason", "raised_by", "try_number", "leaves_at", "valid_until", "is_legal", "chance")
    assert [getattr(along, name) for name in same] == [getattr(without, name) for name in same]


def test_it_is_told_in_an_invite_that_leaves_anyway() -> None:
    text = decide(_with(UNEVEN_TIRE), NOW).text
    assert text is not None
    assert text.items == (DUE_TIRE.at, ALIGNMENT)
    assert text.advised == ("tire_across rear_left",)
    assert text.because.endswith("; told along: left rear tire, alignment and pressure check")
    assert still_wanted(text, _with(UNEVEN_TIRE), NOW, NOW) is None


def test_one_only_and_brakes_first() -> None:
    text = decide(_with(UNEVEN_TIRE, UNEVEN_PADS), NOW).text
    assert text is not None
    assert text.advised == ("pad_inner_outer front_left",)
    # A look at the pads has no hours of its own: a booking holds nothing for it.
    assert text.items == (DUE_TIRE.at,)


def test_what_the_invite_names_already_is_not_told_twice() -> None:
    text = decide(_with(UNEVEN_PADS, due=(DUE_PAD,)), NOW).text
    assert text is not None
    assert text.advised == ()
    both = decide(_with(UNEVEN_PADS, UNEVEN_TIRE, due=(DUE_PAD,)), NOW).text
    assert both is not None
    assert both.advised == ("tire_across rear_left",)
    four = replace(car(), advisories=_advised(UNEVEN_TIRE, tread("front_left", 7, on=MEASURED_ON), of=ALL_WHEEL))
    text = decide(four, NOW).text
    assert text is not None
    # The tires are named: what the four of an all-wheel drive ask for is an advisor's to tell.
    assert text.advised == ("tire_across rear_left",)


@pytest.mark.parametrize(
    "changes",
    [
        {"rests": (Rest("alignment", "", "no", MEASURED_ON, date(2026, 6, 1)),)},
        {"rests": (Rest("alignment", "", "done", MEASURED_ON),)},
        {"rests": (Rest("alignment", "", "later", MEASURED_ON, date(2026, 6, 1)),)},
        {"recommendations": (Recommendation("alignment", "", "approved", MEASURED_ON),)},
        {"recommendations": (Recommendation("alignment", "", "declined", MEASURED_ON, "price"),)},
        {"recommendations": (Recommendation("alignment", "", "declined", date(2026, 3, 1)),)},
    ],
)
def test_what_was_decided_or_rests_is_not_told(changes: dict[str, Any]) -> None:
    text = decide(_with(UNEVEN_TIRE, **changes), NOW).text
    assert text is not None
    assert (text.items, text.advised) == ((DUE_TIRE.at,), ())


def test_a_tire_that_nobody_can_point_at_is_not_told() -> None:
    rotated = (Work("tire_tread", "", "rotated", date(2025, 12, 1)),)
    advisories = _advised(UNEVEN_TIRE, work=rotated)
    assert [one.key for one in advisories] == ["tire_across"]
    text = decide(car(advisories=advisories), NOW).text
    assert text is not None
    assert text.advised == ()


def test_a_rotation_that_is_due_itself_is_named_once() -> None:
    due = DueItem("tire_rotation", "", 0.5, 0.9, MEASURED_ON, date(2026, 4, 1))
    apart = [tread(place, 4 if place.startswith("front") else 8, on=MEASURED_ON) for place in
             ("front_left", "front_right", "rear_left", "rear_right")]  # fmt: skip
    text = decide(_with(*apart, due=(due,)), NOW).text
    assert text is not None
    assert (text.items, text.advised) == ((due.at,), ())
    text = decide(_with(*apart, due=(DUE_PAD,)), NOW).text
    assert text is not None
    assert text.advised == ("tire_rotation",)
    assert text.items == (DUE_PAD.at, ("tire_rotation", ""))


def test_no_rotation_is_suggested_beside_new_tires() -> None:
    """Common practice: a set is turned round to wear evenly, not on the day on which half of it is replaced."""
    apart = [tread(place, 4 if place.startswith("front") else 8, on=MEASURED_ON) for place in
             ("front_left", "front_right", "rear_left", "rear_right")]  # fmt: skip
    text = decide(_with(*apart), NOW).text
    assert text is not None
    assert (text.items, text.advised) == ((DUE_TIRE.at,), ())


def test_a_free_top_off_stays_a_walk_in() -> None:
    text = decide(_with(UNEVEN_TIRE, due=(LOW_WASHER,)), NOW).text
    assert text is not None
    assert (text.reason, text.items, text.advised) == ("free_service", (LOW_WASHER.at,), ())
