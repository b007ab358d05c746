"""A trial of a move: real senders on the old file while it is moved, the move killed or not, then senders on the new.

The judge is the same as for every trial: nothing lost, nothing twice, all at an end. Besides, nothing leaves from the
old file once it was moved.
"""

from __future__ import annotations

import os
import signal
import threading
from dataclasses import dataclass, replace
from random import Random

from followup.points import MOVING
from followup.rehearsal.faults.judge import Verdict
from followup.rehearsal.faults.nursery import Ended, Nursery
from followup.rehearsal.faults.shop import Shop
from followup.rehearsal.faults.trial import AFTER_A_KILL, Plan, Strike, Trial
from followup.rehearsal.faults.worker import AFTER_COMMIT, BEFORE_COMMIT
from followup.storage import installation
from followup.storage.store import Store, make_engine

_AFTER_A_MOVE_SECONDS = 1.5
_TRIES = 4
_LOOKS = 600
_MOVED = 503


@dataclass(frozen=True)
class MovePlan:
    """How many texts have left when the move begins, how many senders run on the old file, where the move is struck."""

    seed: int
    after: int
    senders: int
    strike: Strike | None
    change: str | None = None


def drawn_move(seed: int) -> MovePlan:
    """Three of four moves are killed: at each point in turn, or about a commit."""
    random = Random(f"move {seed}")
    places = [*MOVING, BEFORE_COMMIT, AFTER_COMMIT]
    at = places[seed % len(places)]
    nth = 1 if at in MOVING else random.randint(1, 5)
    strike = Strike(at, nth) if seed % 4 else None
    return MovePlan(seed, random.randint(0, 5), random.randint(1, 2), strike)


def run_move(plan: MovePlan, shop: Shop, target: str, nursery: Nursery) -> Verdict:
    """The verdict on one move to the empty database of that address, and on all that was sent before and after."""
    with Trial(Plan(plan.seed, change=plan.change), shop, nursery).with_provider_and_pages() as trial:
        old = [trial.start("work", trial.provider.address) for _ in range(plan.senders)]
        ended = threading.Event()
        flowing = threading.Thread(target=trial.flow, args=(ended,))
        flowing.start()
        try:
            _wait_for_posts(trial, plan.after)
            faults = _move(trial, plan, target)
            sent = len(trial.provider.posts)
            threading.Event().wait(_AFTER_A_MOVE_SECONDS)
            faults += ["a text left from the old place after the move"] * (len(trial.provider.posts) - sent)
            faults += _not_ended(nursery, old)
        finally:
            ended.set()
            flowing.join()
            for pid in old:
                os.kill(pid, signal.SIGKILL)
        trial.go_on_at(replace(shop, url=target))
        # What came to the old pages after the move was not kept, and they said so.
        trial.provider.refused_reports[:] = [one for one in trial.provider.refused_reports if one != _MOVED]
        trial.go_to_the_end()
        verdict = trial.verdict()
        verdict.faults += faults
        return verdict


def _wait_for_posts(trial: Trial, wanted: int) -> None:
    for _ in range(_LOOKS):
        if len(trial.provider.posts) >= wanted:
            return
        threading.Event().wait(0.005)


def _move(trial: Trial, plan: MovePlan, target: str) -> list[str]:
    """Move it, again after it was killed; what was wrong on the way."""
    faults: list[str] = []
    strike = plan.strike
    for _ in range(_TRIES):
        ended = _wait(trial.nursery, trial.start("db", trial.provider.address, strike, "move", target))
        if ended.how == "exited" and not ended.number:
            return faults
        if ended.how != "killed":
            raise RuntimeError(f"seed {plan.seed}: the move failed\n{(trial.shop.folder / 'db.log').read_text()}")
        trial.kills += 1
        strike = None
        faults += _two_shops(trial.shop, target)
        # The lease of the move that was killed runs out.
        for _ in range(3):
            trial.pass_time(trial.at + AFTER_A_KILL)
    raise RuntimeError(f"seed {plan.seed}: the move did not come to an end")


def _wait(nursery: Nursery, pid: int) -> Ended:
    (ended,) = nursery.wait([pid], 60)
    return ended


def _two_shops(shop: Shop, target: str) -> list[str]:
    """After a kill the old place is the shop, or none of both is until the move is run again."""
    states = []
    for url in (shop.url, target):
        store = Store(make_engine(url))
        with store.write() as connection:
            there = installation.is_there(connection)
            states.append(installation.standing(connection).state if there else "empty")
        store.close()
    allowed = {("here", "empty"), ("moving", "empty"), ("here", "arriving"), ("moving", "arriving"),
               ("moved", "arriving"), ("moved", "here")}  # fmt: skip
    return [] if tuple(states) in allowed else [f"after a kill the places stand as {states}"]


def _not_ended(nursery: Nursery, pids: list[int]) -> list[str]:
    """The senders of the old file end by themselves."""
    left = set(pids)
    while left:
        ended = nursery.wait(list(left), 5)
        if not ended:
            return [f"{len(left)} senders of the old file did not end"]
        left -= {one.pid for one in ended}
        pids[:] = list(left)
    return []
