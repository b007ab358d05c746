"""Which words make a report of a fault together: pairs of classes that stand near each other, and fixed phrases."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

Kind = Literal["flat", "now", "today"]


@dataclass(frozen=True)
class Rule:
    """Classes that make a report within so many words; `unless` names a class that takes it away in the clause."""

    kind: Kind
    needs: tuple[str, str]
    within: int
    unless: str = ""
    is_ordered: bool = False


def _rules(kind: Kind, *lines: str) -> tuple[Rule, ...]:
    """Rules written `A B 6`, `A > B 6` (in this order), `A B 6 -C` (not beside C)."""
    made = []
    for line in lines:
        unless = line.partition(" -")[2]
        parts = line.partition(" -")[0].replace("> ", "").split()
        made.append(Rule(kind, (parts[0], parts[1]), int(parts[2]), unless, ">" in line))
    return tuple(made)


RULES: tuple[Rule, ...] = (
    *_rules(
        "now",
        "PEDAL FEEL 7",
        "PEDAL > FEELAFTER 7 -GOOD",
        "BRAKE > BRAKEFAULT 6",
        "BRAKEFAULT > BRAKE 2",
        "BRAKE HOTPART 5",
        "BRAKE SMOKE 6",
        "NOT > SLOW 3",
        "BRAKE FAILS 5",
        "PEDAL FAILS 5",
        "HANDBRAKE FAILS 5",
        "STEER FAILS 5",
        "WHEEL FAILS 5",
        "THROTTLE FAILS 5",
        "STEER > STEERFAULT 6 -GOOD",
        "STEERFAULT > STEER 3",
        "WHEEL HOTPART 6",
        "WHEEL > WHEELFAULT 6",
        "WHEELFAULT > WHEEL 12",
        "GAUGE HIGH 6",
        "SMELL SCENT 6",
        "SMOKE PART 7",
        "SMOKE PLACE 6",
        "SMOKE SITUATION 9",
        "SMOKE DASH 6",
        "SMOKE CAR 6",
        "PART HOTPART 4",
        "THROTTLE LOOSE 5",
        "OPENING OPENED 5",
    ),
    *_rules(
        "today",
        "PART > LOOSE 4",
        "LOOSE > PART 2",
        "LAMPPART LAMPFAULT 5",
        "COLOR > ICON 3",
        "ICON > COLOR 4",
        "COLOR DASH 5",
        "ICON LIT 4",
        "SIGN LIT 6",
        "DASH LIT 5",
        "COLOR LIT 5",
        "PART SOUND 7",
        "STEER SOUND 5",
        "WHEEL SOUND 6",
        "BRAKE SOUND 6",
        "SOUND SITUATION 12",
        "SOUND PLACE 6",
        "HEARING > SOUND 5",
        "NOTHING SITUATION 10",
        "FAILV SITUATION 8",
        "PART FAILS 5",
        "LAMPPART FAILS 5",
        "OPENING FAILS 4",
        "SAFETY FAILS 5",
        "SAFETY > LOOSE 4",
        "GEAR FAILS 4",
        "DASH FAILS 5",
        "HEARD SITUATION 12 -GOOD",
        "HEARD PART 5 -GOOD",
        "LIKENESS SITUATION 9 -GOOD",
        "SHAKE SITUATION 10",
        "SHAKE PART 6",
        "SHAKE CAR 5",
        "SHAKE PLACE 4",
        "SHAKE DASH 4",
        "SOUND CAR 4",
        "SMELL SITUATION 8",
        "SMELL PART 5",
        "SMELL CAR 4",
        "VEER SIDE 6",
        "FLUID LEAK 5",
        "LEAK UNDER 6",
        "LEAK PART 6",
        "FLUID > LOWNESS 4",
        "LEAK WHEEL 8",
        "LEAK CAR 4",
        "FLUID > UNDER 4",
        "STALL SITUATION 8",
        "STALL CAR 4",
        "GEAR GEARFAULT 5",
        "ONOMATOPOEIA SITUATION 12",
        "ONOMATOPOEIA PLACE 6",
        "ONOMATOPOEIA PART 7",
        "ONOMATOPOEIA WHEEL 6",
        "ONOMATOPOEIA SOUND 6",
    ),
)

DENIABLE = frozenset(
    (
        "SOUND",
        "SHAKE",
        "LEAK",
        "SMELL",
        "SMOKE",
        "STALL",
        "LIT",
        "ONOMATOPOEIA",
        "WHEELFAULT",
        "STEERFAULT",
        "BRAKEFAULT",
    )
)
"""The classes that are the fault itself: a `no` before them denies it."""
