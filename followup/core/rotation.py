"""Rotation of tires: where each may go on a car, and the pattern that its driven wheels ask for.

The rules are common practice of the trade: never between axles where the sizes differ; on its own side where the tread
has a direction; the spare is left out. The patterns by driven wheels are from memory (tire makers' guides for
rotation). The car's handbook comes before all of them.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from followup.core.vehicle import PLACE_WORDS, Vehicle

# "235/50R18", "P235/50 ZR18 97Y": width in mm, height in percent of it, rim in inches.
_SIZE = re.compile(r"(\d{3}) ?/ ?(\d{2,3}) ?Z?[RBD-]?F? ?(\d{2}(?:\.5)?)", re.IGNORECASE)


@dataclass(frozen=True)
class Pattern:
    """One way to rotate four tires: its code, its words for staff, and from which place to which each tire goes."""

    code: str
    words: str
    moves: Mapping[str, str]

    @property
    def is_between_axles(self) -> bool:
        """True where the front tires come to the rear."""
        return any(axle(source) != axle(place) for source, place in self.moves.items())


def _pattern(code: str, words: str, front_left: str, front_right: str, rear_left: str, rear_right: str) -> Pattern:
    places = {"front_left": front_left, "front_right": front_right, "rear_left": rear_left, "rear_right": rear_right}
    return Pattern(code, words, places)


PATTERNS: tuple[Pattern, ...] = (
    _pattern(
        "same_side", "front and rear changed, same side", "rear_left", "rear_right", "front_left", "front_right"
    ),
    _pattern(
        "forward", "front straight back, rear crossed to the front",
        "rear_left", "rear_right", "front_right", "front_left",
    ),
    _pattern(
        "rearward", "rear straight forward, front crossed to the rear",
        "rear_right", "rear_left", "front_left", "front_right",
    ),
    _pattern("crossed", "all four crossed", "rear_right", "rear_left", "front_right", "front_left"),
    _pattern("sides", "left and right changed", "front_right", "front_left", "rear_right", "rear_left"),
)  # fmt: skip
# The pattern for a car whose sizes and direction leave all of them open.
_USUAL = {"front": "forward", "rear": "rearward", "all": "rearward"}
_DRIVE_WORDS = {"front": "front-wheel drive", "rear": "rear-wheel drive", "all": "all-wheel drive"}


def axle(position: str) -> str:
    """ "front" of "front_left"."""
    return position.partition("_")[0]


def side(position: str) -> str:
    """ "left" of "front_left"; "" where the position has no side."""
    return position.partition("_")[2]


def has_two_sizes(vehicle: Vehicle) -> bool | None:
    """True where front and rear tires are of different sizes; None where one of the two was not told."""
    front, rear = vehicle.tire_size_front, vehicle.tire_size_rear
    return None if not front or not rear else _size(front) != _size(rear)


def _size(told: str) -> tuple[str, ...]:
    """Width, height and rim; what is not written so is compared letter by letter, without spaces."""
    found = _SIZE.search(told)
    return found.groups() if found else ("".join(told.casefold().split()),)


def why_not(vehicle: Vehicle, source: str, place: str) -> str | None:
    """What speaks against moving the tire at `source` to `place`, in words; None where nothing does that is known."""
    if source == place:
        return None
    if "spare" in (source, place):
        return "the spare is left out of a rotation"
    if axle(source) != axle(place) and has_two_sizes(vehicle):
        return f"front ({vehicle.tire_size_front}) and rear ({vehicle.tire_size_rear}) sizes differ"
    if side(source) and side(place) and side(source) != side(place) and vehicle.directional:
        return "the tires have a direction and stay on their side"
    return None


def possible_patterns(vehicle: Vehicle) -> tuple[Pattern, ...]:
    """The patterns against which nothing speaks that is known of the car."""
    return tuple(
        pattern
        for pattern in PATTERNS
        if not any(why_not(vehicle, source, place) for source, place in pattern.moves.items())
    )


def usual_pattern(vehicle: Vehicle) -> Pattern | None:
    """The pattern to begin with; None where no move is possible with the tires on their wheels.

    Where the direction or the driven wheels are not known it is the one that suits any of them: front and rear
    changed on their sides.
    """
    possible = {one.code: one for one in possible_patterns(vehicle)}
    wanted = _USUAL.get(vehicle.driven or "", "same_side") if vehicle.directional is False else "same_side"
    return next((possible[code] for code in (wanted, "same_side", "sides") if code in possible), None)


def rotation_words(vehicle: Vehicle) -> str:
    """How the tires of this car may be rotated, for staff: the pattern, what forbids others, what to look at first."""
    usual = usual_pattern(vehicle)
    barred = list(_what_bars(vehicle))
    if usual is None:
        return f"no move: {' and '.join(barred)}"
    said = [usual.words]
    if not barred and vehicle.directional is False and vehicle.driven in _DRIVE_WORDS:
        said.append(f"usual for {_DRIVE_WORDS[vehicle.driven]}")
    said += [f"because {' and '.join(barred)}"] if barred else []
    if vehicle.run_flat:
        said.append("run-flat tires only among themselves")
    return "; ".join([*said, *_look_first(vehicle)])


def _what_bars(vehicle: Vehicle) -> Iterator[str]:
    if has_two_sizes(vehicle):
        yield f"front ({vehicle.tire_size_front}) and rear ({vehicle.tire_size_rear}) sizes differ"
    if vehicle.directional:
        yield "the tires have a direction"


def _look_first(vehicle: Vehicle) -> Iterator[str]:
    unknown = []
    if has_two_sizes(vehicle) is None:
        unknown.append("whether front and rear sizes are the same")
    if vehicle.directional is None:
        unknown.append("whether an arrow on the tire gives a direction")
    if unknown:
        yield f"look first {' and '.join(unknown)}"


def doubts_of_moves(vehicle: Vehicle, moves: Mapping[str, str]) -> Iterator[str]:
    """What is doubtful in moves that were told (from place to place), one sentence each."""
    for source, place in sorted(moves.items()):
        because = why_not(vehicle, source, place)
        if because:
            yield f"{PLACE_WORDS[source]} to {PLACE_WORDS[place]}: {because}"
    for place in sorted(set(moves.values())):
        came = sorted(source for source, into in moves.items() if into == place)
        if len(came) > 1:
            yield f"{' and '.join(PLACE_WORDS[one] for one in came)} both go to {PLACE_WORDS[place]}"
