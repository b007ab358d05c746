"""What a shop's cars taught, in plain values and plain words: pages, storage and the command line read it.

Without numpy; the fitting is `learn.py`'s.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import asdict, dataclass
from typing import Any, Literal

from followup.core.forecast.priors import ShopPriors, UsagePrior, WearLesson
from followup.core.item import Catalogue

# The part of the priors that is about driving; the others are codes of items.
USAGE = "usage"
# Fewer cars than this that tell something teach nothing that can be told from chance.
LEAST_CARS = 12
# A difference of less is called usual.
_USUAL_PERCENT = 3

# How a version of a shop's priors came to be kept: learned, set back to the published, brought back from before.
SOURCES = ("learned", "published", "brought_back")
# Differences of less than this (in logs) change no due window by more than chance does from one day to the next.
_SAME_WITHIN = 0.02

Outcome = Literal["learned", "kept_old", "published", "too_few"]


@dataclass(frozen=True)
class LearnedPart:
    """What became of one part of the priors (`USAGE`, or an item's code).

    `found` are, by axle ("" where there is none), how many times the published rate of wear, or distance a day, was
    found. `published_score` and `own_score` are the mean CRPS of `held_back` last readings (in the item's unit; logs
    of the distance a day), foretold without them: the less, the better.
    """

    part: str
    outcome: Outcome
    cars: int
    held_back: int = 0
    published_score: float | None = None
    own_score: float | None = None
    found: tuple[tuple[str, float], ...] = ()


@dataclass(frozen=True)
class Learned:
    """The priors to be used from now on, and how they came about; `cars` is how many were looked at."""

    priors: ShopPriors
    cars: int
    parts: tuple[LearnedPart, ...]

    @property
    def is_news(self) -> bool:
        """True where something was learned that is used from now on."""
        return any(one.outcome == "learned" for one in self.parts)

    def to_json(self) -> dict[str, Any]:
        """As plain JSON."""
        parts = [{**asdict(one), "found": dict(one.found)} for one in self.parts]
        return {"cars": self.cars, "parts": parts, "priors": self.priors.to_json()}

    @staticmethod
    def from_json(kept: Mapping[str, Any]) -> Learned:
        """What `to_json` made."""
        parts = tuple(LearnedPart(**{**one, "found": tuple(one["found"].items())}) for one in kept["parts"])
        return Learned(ShopPriors.from_json(kept["priors"]), kept["cars"], parts)


def differ(first: ShopPriors, second: ShopPriors) -> bool:
    """True where due windows by the one would lie elsewhere than by the other, so that it is worth forecasting anew."""
    usage, other = asdict(first.usage), asdict(second.usage)
    apart = [abs(usage.pop("log_miles_per_day") - other.pop("log_miles_per_day"))]
    apart += [abs(math.log(usage[name] / other[name])) / 3 for name in usage]
    for item in {one.item for one in (*first.wear, *second.wear)}:
        one, two = (priors.lesson(item) or WearLesson(item) for priors in (first, second))
        rates, others = dict(one.log_rate), dict(two.log_rate)
        apart += [abs(rates.get(trait, 0.0) - others.get(trait, 0.0)) for trait in {*rates, *others}]
        for name in ("between_cars", "between_items", "reading_error", "mate_error"):
            apart.append(abs(math.log(getattr(one, name) / getattr(two, name))) / 3)
    return any(one > _SAME_WITHIN for one in apart)


def sentences(learned: Learned, catalogue: Catalogue) -> list[str]:
    """What was learned, a sentence or two a part; `catalogue` names the items."""
    if not learned.parts:
        return [f"Nothing can be learned from {_cars(learned.cars)}: {LEAST_CARS} that were seen twice are needed."]
    return [sentence(one, catalogue) for one in learned.parts]


def sentence(part: LearnedPart, catalogue: Catalogue) -> str:
    """What became of one part, in words."""
    name = part_words(part, catalogue)
    if part.outcome == "too_few":
        return f"{name}: only {_cars(part.cars)} tell something, {LEAST_CARS} are needed. What is in use stays."
    if part.outcome == "learned":
        return f"{name}: {found_words(part)}; learned from {_cars(part.cars)}. {scores_words(part, catalogue)}"
    stays = "the published values stay" if part.outcome == "published" else "what was learned before stays"
    return f"{name}: {stays}. What {_cars(part.cars)} taught is not better: {_lower(scores_words(part, catalogue))}"


def part_words(part: LearnedPart, catalogue: Catalogue) -> str:
    """What a part is called on pages."""
    if part.part == USAGE:
        return "Miles driven"
    item = catalogue.get(part.part)
    return item.words if item else part.part


def found_words(part: LearnedPart) -> str:
    """How far the shop's own differs from the published, as in "front wears about 12 % slower than is usual"."""
    if part.part == USAGE:
        return "; ".join(f"customers drive {_more_or_less(factor, 'more', 'less')}" for _, factor in part.found)
    told = [f"{axle} {_wears(factor)}".strip() for axle, factor in part.found]
    return ", ".join(told)


def scores_words(part: LearnedPart, catalogue: Catalogue) -> str:
    """Both scores in words."""
    if part.own_score is None or part.published_score is None:
        return ""
    item = catalogue.get(part.part)
    unit = f" {item.unit}" if item and item.unit else ""
    held = f"{part.held_back} last readings" if part.part != USAGE else f"{part.held_back} last distances"
    return (
        f"{held}, foretold without them: off by {part.own_score:.3g}{unit} by the shop's own values, "
        f"by {part.published_score:.3g}{unit} by the published ones."
    )


def usage_found(usage: UsagePrior, published: UsagePrior) -> tuple[tuple[str, float], ...]:
    """How many times the published distance a day is driven."""
    return (("", round(math.exp(usage.log_miles_per_day - published.log_miles_per_day), 4)),)


def _wears(factor: float) -> str:
    return f"wears {_more_or_less(factor, 'faster', 'slower')}"


def _more_or_less(factor: float, more: str, less: str) -> str:
    percent = round(abs(factor - 1) * 100)
    if percent < _USUAL_PERCENT:
        return "as is usual"
    return f"about {percent} % {more if factor > 1 else less} than is usual"


def _cars(count: int) -> str:
    return "1 car" if count == 1 else f"{count} cars"


def _lower(words: str) -> str:
    return words[:1].lower() + words[1:]
