"""`followup bench policies`: what comes of each way of inviting in a plain world of cars whose truth is known.

Whoever has it may compare: every way meets the same cars, visits and answers under the same tries.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from scipy.special import stdtrit

from followup.rehearsal.bench.figures import Figure, at_most
from followup.rehearsal.policies.overdue import WHY
from followup.rehearsal.policies.policies import AS_SHIPPED, POLICIES
from followup.rehearsal.policies.run import COUNTED_WEEKS, WARM_UP_WEEKS, Compared, Counts, compare

# What the real forecast has to reach by the rule as shipped.
_TEXTS, _WASTED, _OF_REMINDER, _OF_ORACLE = 1.45, 10.0, 0.87, 1.06
_REMINDER, _ORACLE = "six-month reminder", "oracle"
# Of these it is told why something is overdue.
_EXPLAINED = (_REMINDER, AS_SHIPPED.name, _ORACLE)


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
    ways = range(len(POLICIES))
    why = [_why_line(compared, number) for number in ways if POLICIES[number].name in _EXPLAINED]
    return [head, *(_line(compared, number) for number in ways), *why, *_bars(compared)]


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


def _why_line(compared: Compared, number: int) -> Figure:
    days = (f"{compared.a_year(of)[number]:.0f} {why}" for why, of in zip(WHY, compared.counts.why, strict=True))
    return Figure(f"days overdue, {compared.policies[number].name}", ", ".join(days))


def _bars(compared: Compared) -> list[Figure]:
    ours, rules = compared.row(AS_SHIPPED.name), AS_SHIPPED.rules
    counts = compared.counts
    words = f"ours as shipped (q = {rules.send_worn_at_chance:g}, near {rules.near_at_chance:g})"
    return [
        at_most(f"{words}: texts a customer-year", float(compared.a_year(counts.texts)[ours]), _TEXTS, 2),
        *_wasted(f"{words}: prompted visits where nothing was found near its limit", counts.idle[ours], counts, ours),
        *_wasted(f"{words}: prompted visits where nothing truly was", counts.wasted[ours], counts, ours),
        *_ratio(f"{words}: days overdue over the reminder's", compared, ours, _REMINDER, _OF_REMINDER),
        *_ratio(f"{words}: days overdue over the oracle's", compared, ours, _ORACLE, _OF_ORACLE),
    ]


def _wasted(words: str, what: np.ndarray, counts: Counts, ours: int) -> list[Figure]:
    by_seed = 100 * what / np.maximum(counts.prompted[ours], 1.0)
    found = at_most(words, _share(what, counts.prompted[ours]), _WASTED, 1, " %")
    return [found, Figure("  seed by seed", _spread(by_seed, 1))]


def _ratio(words: str, compared: Compared, ours: int, name: str, bound: float) -> list[Figure]:
    other, counts = compared.row(name), compared.counts
    overdue, unseen = counts.overdue_days, counts.why[WHY.index("never seen")]
    seen = overdue - unseen
    return [
        at_most(words, float(overdue[ours].sum() / overdue[other].sum()), bound),
        Figure("  seed by seed", _spread(overdue[ours] / overdue[other], 3)),
        Figure("  without cars that never came", f"{seen[ours].sum() / seen[other].sum():.3f}"),
    ]


def _spread(by_seed: np.ndarray, digits: int) -> str:
    """Each seed, and the interval that holds the mean of all seeds with 95 % (Student's t)."""
    told, count = ", ".join(f"{one:.{digits}f}" for one in by_seed), len(by_seed)
    if count < 2:
        return told
    half = float(stdtrit(count - 1, 0.975)) * by_seed.std(ddof=1) / count**0.5
    return f"{told}; 95 %: {by_seed.mean() - half:.{digits}f} to {by_seed.mean() + half:.{digits}f}"


def _share(part: np.ndarray, of: np.ndarray) -> float:
    return float(100 * part.sum() / max(of.sum(), 1.0))
