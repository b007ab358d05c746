"""The judge of a simulated shop: which promises were broken, and what the week was like in one line."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterator

from followup.rehearsal.week.broken import Broken
from followup.rehearsal.week.promises_in import (
    each_kept_once,
    none_after_a_stop,
    somebody_knows,
    symptoms_reach_a_person,
)
from followup.rehearsal.week.promises_out import in_hours, none_lost, none_twice, seldom_enough, with_consent
from followup.rehearsal.week.promises_shop import none_while_in_the_shop, within_capacity
from followup.rehearsal.week.record import Recorded

PROMISES: tuple[Callable[[Recorded], Iterator[Broken]], ...] = (
    none_lost, none_twice, in_hours, with_consent, seldom_enough, each_kept_once, none_after_a_stop,
    symptoms_reach_a_person, somebody_knows, none_while_in_the_shop, within_capacity,
)  # fmt: skip


def broken_promises(it: Recorded) -> list[Broken]:
    """Every promise that was broken, in the order of `PROMISES`."""
    return [broken for promise in PROMISES for broken in promise(it)]


def in_one_line(it: Recorded, broken: list[Broken]) -> str:
    """What there was to get wrong, and what was."""
    kinds = Counter(row["kind"] for _, row in it.taken())
    states = Counter(row["state"] for row in it.texts)
    meant = Counter("symptom" if one.meant.startswith("symptom") else one.meant for one in it.written)
    fetched = sum(one.acknowledged_at is None and one.listed_at is not None for one in it.written)
    booked = sum(row["state"] in ("confirmed", "kept", "missed") for row in it.requests)
    return (
        f"taken {sum(kinds.values())} ({kinds['invite']} invites, {kinds['visit']} about visits, {kinds['answer']} "
        f"answers, {kinds['alert']} alerts), held {states['held']}, failed {states['failed']}, "
        f"written {len(it.written)} ({meant['stop']} stops, {meant['symptom']} symptoms, {fetched} fetched), "
        f"booked {booked}; broken {len(broken)}"
    )
