"""Which tires may go where. Common practice of the trade: never between axles where sizes differ, same side only where
the tread has a direction, the spare left out; the patterns by driven wheels are from memory (makers' guides)."""

from __future__ import annotations

from dataclasses import replace

import pytest

from followup.core.rotation import (
    PATTERNS,
    doubts_of_moves,
    has_two_sizes,
    possible_patterns,
    rotation_words,
    usual_pattern,
    why_not,
)
from followup.core.vehicle import CORNERS, Vehicle
from followup.web.technician.entered import ROTATIONS

ONE_SIZE = {"tire_size_front": "235/50R18", "tire_size_rear": "235/50R18"}
TWO_SIZES = {"tire_size_front": "235/50R18", "tire_size_rear": "265/45R18"}


def _car(**facts: object) -> Vehicle:
    return Vehicle("V-1", **facts)


def test_every_pattern_brings_each_tire_to_one_place() -> None:
    for pattern in PATTERNS:
        assert set(pattern.moves) == set(pattern.moves.values()) == set(CORNERS)
        assert all(source != place for source, place in pattern.moves.items())
    assert {code: moves for code, (_, moves) in ROTATIONS.items()} == {one.code: dict(one.moves) for one in PATTERNS}


@pytest.mark.parametrize(
    ("driven", "usual"), [("front", "forward"), ("rear", "rearward"), ("all", "rearward"), (None, "same_side")]
)
def test_the_usual_pattern_by_driven_wheels(driven: str | None, usual: str) -> None:
    """Front-wheel drive: the front straight back, the rear crossed; rear and all-wheel drive the other way round."""
    pattern = usual_pattern(_car(driven=driven, directional=False, **ONE_SIZE))
    assert pattern is not None
    assert pattern.code == usual


@pytest.mark.parametrize(
    ("facts", "possible", "usual"),
    [
        ({"directional": False, **ONE_SIZE}, {"same_side", "forward", "rearward", "crossed", "sides"}, "same_side"),
        ({"directional": True, **ONE_SIZE}, {"same_side"}, "same_side"),
        ({"directional": False, **TWO_SIZES}, {"sides"}, "sides"),
        ({"directional": True, **TWO_SIZES}, set(), None),
        # What is not known forbids nothing; begun is with what suits a tread with a direction too.
        ({"driven": "front"}, {"same_side", "forward", "rearward", "crossed", "sides"}, "same_side"),
    ],
)
def test_what_sizes_and_direction_leave(facts: dict[str, object], possible: set[str], usual: str | None) -> None:
    car = _car(**facts)
    assert {one.code for one in possible_patterns(car)} == possible
    found = usual_pattern(car)
    assert (found.code if found else None) == usual


@pytest.mark.parametrize(
    ("front", "rear", "differ"),
    [
        ("235/50R18", "235/50R18", False), ("235/50R18", "235/50 R18", False), ("235/50R18", "P235/50ZR18 97Y", False),
        ("235/50R18", "235/50RF18 97V", False), ("235/50R18", "245/50R18", True), ("235/50R18", "235/45R18", True),
        ("235/50R18", "235/50R19", True), ("31x10.50R15", "31X10.50 R15", False), ("31x10.50R15", "33x12.50R15", True),
        ("235/50R18", None, None), (None, None, None), ("", "235/50R18", None),
    ],
)  # fmt: skip
def test_sizes_are_compared_as_sizes(front: str | None, rear: str | None, differ: bool | None) -> None:
    """Width, height and rim as they are stamped (ISO 4000-1, from memory); load and speed letters do not count."""
    assert has_two_sizes(_car(tire_size_front=front, tire_size_rear=rear)) is differ


def test_moves_against_the_rules_are_doubtful() -> None:
    directional = _car(directional=True, **ONE_SIZE)
    assert list(doubts_of_moves(directional, {"front_left": "rear_right"})) == [
        "left front to right rear: the tires have a direction and stay on their side"
    ]
    assert list(doubts_of_moves(directional, {"front_left": "rear_left", "front": "rear"})) == []
    staggered = _car(**TWO_SIZES)
    (says,) = doubts_of_moves(staggered, {"front_left": "rear_left"})
    assert says == "left front to left rear: front (235/50R18) and rear (265/45R18) sizes differ"
    assert list(doubts_of_moves(staggered, {"front_left": "front_right", "front_right": "front_left"})) == []
    assert why_not(_car(), "spare", "front_left") == why_not(_car(), "front_left", "spare")
    assert list(doubts_of_moves(_car(), {"spare": "front_left"})) == [
        "spare to left front: the spare is left out of a rotation"
    ]
    assert list(doubts_of_moves(_car(), {"front_left": "rear_left", "front_right": "rear_left"})) == [
        "left front and right front both go to left rear"
    ]


@pytest.mark.parametrize("pattern", PATTERNS, ids=lambda one: one.code)
def test_what_is_possible_is_never_doubted_and_what_is_not_always(pattern: object) -> None:
    for facts in (ONE_SIZE, TWO_SIZES, {}):
        for directional in (True, False, None):
            car = _car(directional=directional, **facts)
            is_possible = pattern in possible_patterns(car)
            assert (not list(doubts_of_moves(car, pattern.moves))) is is_possible


def test_what_staff_read_of_a_rotation() -> None:
    known = _car(driven="front", directional=False, **ONE_SIZE)
    assert rotation_words(known) == "front straight back, rear crossed to the front; usual for front-wheel drive"
    assert rotation_words(replace(known, directional=True)) == (
        "front and rear changed, same side; because the tires have a direction"
    )
    assert rotation_words(replace(known, tire_size_rear="265/45R18")) == (
        "left and right changed; because front (235/50R18) and rear (265/45R18) sizes differ"
    )
    assert rotation_words(replace(known, tire_size_rear="265/45R18", directional=True)) == (
        "no move: front (235/50R18) and rear (265/45R18) sizes differ and the tires have a direction"
    )
    assert rotation_words(replace(known, run_flat=True)).endswith("run-flat tires only among themselves")
    assert rotation_words(_car(driven="front")) == (
        "front and rear changed, same side; look first whether front and rear sizes are the same and whether an arrow "
        "on the tire gives a direction"
    )
