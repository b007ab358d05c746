"""`followup bench policies`: what comes of each way of inviting in a plain world of cars whose truth is known.

Whoever has it may compare: every way meets the same cars, visits and answers under the same tries.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from followup.rehearsal.bench.figures import Figure, at_most
from followup.rehearsal.policies.policies import AS_SHIPPED, POLICIES
from followup.rehearsal.policies.run import COUNTED_WEEKS, WARM_UP_WEEKS, Compared, compare

# What the real forecast has to reach by the rule as shipped.
_TEXTS, _WASTED, _OF_REMINDER, _OF_ORACLE = 1.45, 10.0, 0.87, 1.06
_REMINDER = "six-month reminder"


@dataclass(frozen=True)
class Asked:
    """Customers of each seed, the first seed, and how many of them."""

    customers: int
    seed: int
    seeds: int = 3

    @property
    def steps(self) -> int:
        """How often `progress` is told of one week."""
        return WARM_UP_WEEKS + COUNTED_WEEKS


def bench_policies(asked: Asked, progress: Callable[[int], object]) -> list[Figure]:
    """The whole table."""
    seeds = tuple(range(asked.seed, asked.seed + asked.seeds))
    compared = compare(asked.customers, seeds, progress)
    told = ", ".join(str(seed) for seed in seeds)
    head = Figure("customers a seed; seeds", f"{asked.customers:,}; {told}")
    return [head, *(_line(compared, number) for number in range(len(POLICIES))), *_bars(compared)]


def _line(compared: Compared, number: int) -> Figure:
    counts = compared.counts
    texts, own, prompted, overdue, legal = (
        compared.a_year(what)[number]
        for what in (counts.texts, counts.own, counts.prompted, counts.overdue_days, counts.legal_days)
    )
    idle, wasted = (_share(what[number], counts.prompted[number]) for what in (counts.idle, counts.wasted))
    return Figure(
        f"a customer-year, {compared.policies[number].name}",
        f"{texts:.2f} texts  {own:.2f} own visits  {prompted:.2f} prompted  {idle:4.1f} % idle  {wasted:4.1f} % truly  "
        f"{overdue:3.0f} days overdue  {legal:3.0f} past legal",
    )


def _bars(compared: Compared) -> list[Figure]:
    ours, rules = compared.row(AS_SHIPPED.name), AS_SHIPPED.rules
    counts = compared.counts
    words = f"ours as shipped (q = {rules.send_worn_at_chance:g}, near {rules.near_at_chance:g})"
    overdue = counts.overdue_days
    return [
        at_most(f"{words}: texts a customer-year", float(compared.a_year(counts.texts)[ours]), _TEXTS, 2),
        at_most(
            f"{words}: prompted visits where nothing was found near its limit",
            _share(counts.idle[ours], counts.prompted[ours]), _WASTED, 1, " %",
        ),
        at_most(
            f"{words}: prompted visits where nothing truly was", _share(counts.wasted[ours], counts.prompted[ours]),
            _WASTED, 1, " %",
        ),
        *_ratio(f"{words}: days overdue over the reminder's", overdue, ours, compared.row(_REMINDER), _OF_REMINDER),
        *_ratio(f"{words}: days overdue over the oracle's", overdue, ours, compared.row("oracle"), _OF_ORACLE),
    ]  # fmt: skip


def _ratio(words: str, of: np.ndarray, ours: int, other: int, bound: float) -> list[Figure]:
    by_seed = ", ".join(f"{one:.2f}" for one in of[ours] / of[other])
    return [at_most(words, float(of[ours].sum() / of[other].sum()), bound), Figure("  seed by seed", by_seed)]


def _share(part: np.ndarray, of: np.ndarray) -> float:
    return float(100 * part.sum() / max(of.sum(), 1.0))
