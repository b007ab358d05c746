"""The table of a simulated shop: ours as it was lived, and other ways of inviting on the same kind of world."""

from __future__ import annotations

from dataclasses import asdict, dataclass
from typing import Any

from followup.rehearsal.policies.policies import AS_SHIPPED, POLICIES
from followup.rehearsal.policies.run import compare
from followup.rehearsal.years.life import Lived

AS_LIVED = "ours, as lived by the program"
_BAR = 30


@dataclass(frozen=True)
class Way:
    """One line; `wasted` is the share of the visits from texts at which nothing was near its action limit, None where
    there were none; `broken_promises` is judged only where the program itself lived."""

    policy: str
    texts_per_customer_year: float
    wasted: float | None
    overdue_days: float
    broken_promises: int | None

    def to_json(self) -> dict[str, Any]:
        """As a script reads it."""
        return asdict(self)


def our_way(lived: Lived) -> Way:
    """What came of the shop that lived."""
    years, counted = max(lived.asked.car_years, 1e-9), lived.counted
    return Way(
        AS_LIVED, lived.invites / years, _share(counted.wasted, counted.prompted), counted.overdue_days / years,
        len(lived.broken),
    )  # fmt: skip


def other_ways(cars: int, seed: int) -> list[Way]:
    """The others meet a world of as many customers, drawn from the same seed; it hangs on nothing that was lived."""
    policies = tuple(one for one in POLICIES if one.kind != "ours" or one == AS_SHIPPED)
    found = compare(cars, (seed,), lambda _weeks: None, policies)
    texts, overdue = (found.a_year(what) for what in (found.counts.texts, found.counts.overdue_days))
    prompted, wasted = found.counts.prompted.sum(axis=1), found.counts.wasted.sum(axis=1)
    return [
        Way(one.name, float(texts[row]), _share(wasted[row], prompted[row]), float(overdue[row]), None)
        for row, one in enumerate(policies)
    ]


def _share(part: float, of: float) -> float | None:
    return float(part / of) if of else None


def as_words(ways: list[Way]) -> str:
    """The table, and a bar for each way's days overdue."""
    width = max(len(one.policy) for one in ways)
    most = max(max(one.overdue_days for one in ways), 1e-9)
    lines = [f"{'a customer-year':{width}}  texts  wasted  days overdue  broken promises"]
    for one in ways:
        wasted = "     -" if one.wasted is None else f"{one.wasted:6.1%}"
        broken = "-" if one.broken_promises is None else str(one.broken_promises)
        texts, overdue = f"{one.texts_per_customer_year:5.2f}", f"{one.overdue_days:12.0f}"
        lines.append(f"{one.policy:{width}}  {texts}  {wasted}  {overdue}  {broken:>15}")
    lines += ["", "days overdue"]
    lines += [f"{one.policy:{width}}  {'█' * round(_BAR * one.overdue_days / most)}" for one in ways]
    lines += ["texts"]
    most = max(max(one.texts_per_customer_year for one in ways), 1e-9)
    lines += [f"{one.policy:{width}}  {'█' * round(_BAR * one.texts_per_customer_year / most)}" for one in ways]
    return "\n".join(lines)
