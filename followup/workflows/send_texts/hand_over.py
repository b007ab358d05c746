"""Hand texts in flight to the transport, one or several at once, and keep what it made of each.

Each call holds one text, so that a process that dies leaves as many texts in doubt as it had calls. What a call said
is worth waiting for: where the database is away it is kept when it is back, else a person would have to decide.
"""

from __future__ import annotations

import logging
import threading
from collections.abc import Callable, Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from functools import partial

from followup.points import reached
from followup.storage import outcomes
from followup.storage.rows import Row
from followup.storage.store import DATABASE_TROUBLE, DatabaseMoved, Store
from followup.transports.transport import (
    OutcomeUnknown,
    OutgoingText,
    ProvenRefused,
    RateLimited,
    SentReceipt,
    Transport,
)
from followup.workflows.send_texts.outcome import keep_doubt, keep_receipt, keep_refusal, put_back

# What the transport may take to connect and read.
LONGEST_CALL = timedelta(seconds=35)
# Longer, so that a claim never runs out under a living worker.
LEASE = timedelta(seconds=60)
# How often and how long it is tried to keep an outcome while the database is away.
TRIES_TO_KEEP = 90
TRIES_AT_THE_END = 3
TRY_EVERY_SECONDS = 1.0
_LOG = logging.getLogger(__name__)


@dataclass(frozen=True)
class Sender:
    """What sending needs besides the store: how texts leave, the hooks' address, and what the law asks to be set.

    `is_registered` is about US numbers (brand, campaign, use case and day stand in the settings); texts that stay on
    this machine need none, and no pace (None). `wait` waits until the number may send again; once `is_over`, no
    further text is begun, and none before `rests_until`. Up to `at_once` texts are handed over at a time.
    `holds_back` names kinds that wait in this round.
    """

    transport: Transport
    public_base_url: str
    is_registered: bool
    segments_per_second: float | None
    secret: str
    wait: Callable[[float], object]
    is_over: Callable[[], bool] = lambda: False
    rests_until: datetime | None = None
    at_once: int = 1
    holds_back: tuple[str, ...] = ()


@dataclass(frozen=True)
class SentCount:
    """What one round did, and until when the number rests because the provider would refuse every text of it."""

    sent: int = 0
    other: int = 0
    rests_until: datetime | None = None


@dataclass
class Round:
    """What a round has done so far."""

    rests_until: datetime | None
    sent: int = 0
    other: int = 0
    lock: threading.Lock = field(default_factory=threading.Lock)


@dataclass
class HandOver:
    """Hands one text over: here, or beside up to `at_once - 1` others."""

    work: Callable[[Row, OutgoingText], None]
    pool: ThreadPoolExecutor | None
    room: threading.Semaphore

    def wait_for_room(self) -> None:
        """Wait until another text could be handed over, so that none is claimed before its turn."""
        self.room.acquire()
        self.room.release()

    def __call__(self, row: Row, ready: OutgoingText) -> None:
        """Hand this one over."""
        if self.pool is None:
            self.work(row, ready)
            return
        self.room.acquire()
        self.pool.submit(self.work, row, ready).add_done_callback(self._ended)

    def _ended(self, done: object) -> None:
        self.room.release()


@contextmanager
def handing_over(store: Store, sender: Sender, now: Callable[[], datetime], done: Round) -> Iterator[HandOver]:
    """Counts into `done`; at the end every call has ended."""
    pool = ThreadPoolExecutor(sender.at_once, thread_name_prefix="call") if sender.at_once > 1 else None
    failed: list[BaseException] = []

    def work(row: Row, ready: OutgoingText) -> None:
        try:
            _hand_over(store, sender, now, done, row, ready)
        except BaseException as error:
            failed.append(error)
            if pool is None:
                raise

    try:
        yield HandOver(work, pool, threading.Semaphore(sender.at_once))
    finally:
        if pool is not None:
            pool.shutdown(wait=True)
    if failed:
        raise failed[0]


def _hand_over(
    store: Store, sender: Sender, now: Callable[[], datetime], done: Round, row: Row, ready: OutgoingText
) -> None:
    with store.read() as connection:
        is_in_time = outcomes.has_time_left(connection, row["id"], row["attempt"], LONGEST_CALL)
    if not is_in_time:
        put_back(store, row, now())
        _count(done)
        return
    reached("handing over")
    keep = _call(store, sender, now, row, ready)
    reached("answered")
    outcome = _insist(keep, row, sender)
    with done.lock:
        done.sent += outcome is True
        done.other += outcome is not True
        if isinstance(outcome, datetime):
            done.rests_until = outcome


def _count(done: Round) -> None:
    with done.lock:
        done.other += 1


def _call(
    store: Store, sender: Sender, now: Callable[[], datetime], row: Row, ready: OutgoingText
) -> Callable[[], bool | datetime | None]:
    """Hand it over; how to keep what came of it: whether it was sent, or until when the number rests."""
    try:
        receipt = sender.transport.send(ready)
    except ProvenRefused as refused:
        return partial(_refused, store, row, refused, now, sender.secret)
    except OutcomeUnknown:
        return partial(_in_doubt, store, row, now)
    return partial(_taken, store, row, receipt, now)


def _taken(store: Store, row: Row, receipt: SentReceipt, now: Callable[[], datetime]) -> bool:
    keep_receipt(store, row, receipt, now())
    return True


def _refused(
    store: Store, row: Row, refused: ProvenRefused, now: Callable[[], datetime], secret: str
) -> datetime | None:
    again_at = keep_refusal(store, row, refused, now(), secret)
    # The next text would meet the same.
    return again_at if isinstance(refused, RateLimited) or refused.is_about_sender else None


def _in_doubt(store: Store, row: Row, now: Callable[[], datetime]) -> None:
    keep_doubt(store, row, now())


def _insist(keep: Callable[[], bool | datetime | None], row: Row, sender: Sender) -> bool | datetime | None:
    """Keep it, again and again while the database is away; a process that is to end tries for some seconds only."""
    for tried in range(TRIES_TO_KEEP):
        if sender.is_over() and tried >= TRIES_AT_THE_END:
            break
        try:
            return keep()
        except DatabaseMoved:
            # It is looked up by whoever sends from the new place.
            raise
        except DATABASE_TROUBLE as away:
            _LOG.warning("text %s: its outcome cannot be kept yet (%s)", row["id"], type(away).__name__)
            threading.Event().wait(TRY_EVERY_SECONDS)
    return keep()
