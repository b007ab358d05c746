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
    NotAccepted,
    OutcomeUnknown,
    OutgoingText,
    ProvenRefused,
    RateLimited,
    SentReceipt,
    Transport,
)
from followup.workflows.send_texts.outcome import Receipts, keep_doubt, keep_refusal, put_back

# What the transport may take to connect and read.
LONGEST_CALL = timedelta(seconds=35)
# Longer, so that a claim never runs out under a living worker.
LEASE = timedelta(seconds=60)
# So long it is waited for half of all calls to end, so that as many texts are made ready together; where that was
# enough, for all of them, as long as they end within so long of each other.
A_MOMENT_SECONDS = 0.05
ONE_UPON_ANOTHER_SECONDS = 0.005
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
    `holds_back` names kinds that wait in this round. `link_base` is what links to our pages begin with in texts, ""
    where the pages have no public address.
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
    link_base: str = ""


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

    def count(self, *, sent: int = 0, other: int = 0) -> None:
        """Add to what was done."""
        with self.lock:
            self.sent += sent
            self.other += other


class Room:
    """How many calls may begin; each that ends makes room again."""

    def __init__(self, places: int) -> None:
        self._free, self._places, self._half = places, places, (places + 1) // 2
        self._changed = threading.Condition()

    def wait(self, *, for_several: bool) -> int:
        """Wait until a call may begin, and a moment longer for several, since they are made ready for less than each
        alone; how many may begin.

        For half of all, so that one half is made ready while the other half's provider takes its time. Where it takes
        none, waiting for the others costs nothing: for all of them.
        """
        with self._changed:
            if for_several:
                if self._changed.wait_for(self._half_is_free, A_MOMENT_SECONDS):
                    while self._free < self._places and self._changed.wait(ONE_UPON_ANOTHER_SECONDS):
                        pass
                else:
                    self._changed.wait_for(lambda: self._free > 0)
                    self._changed.wait_for(self._half_is_free, A_MOMENT_SECONDS)
            self._changed.wait_for(lambda: self._free > 0)
            return self._free

    def _half_is_free(self) -> bool:
        return self._free >= self._half

    def take(self, calls: int) -> None:
        """So many begin."""
        with self._changed:
            self._free -= calls

    def give(self) -> None:
        """One has ended."""
        with self._changed:
            self._free += 1
            self._changed.notify()


@dataclass
class HandOver:
    """Hands texts over: one here, or several beside each other."""

    store: Store
    now: Callable[[], datetime]
    work: Callable[[Row, OutgoingText], None]
    put_back: Callable[[Row], None]
    pool: ThreadPoolExecutor | None
    room: Room

    def wait_for_room(self, *, for_several: bool) -> int:
        """Wait until another text could be handed over, so that none is claimed before its turn; how many could."""
        return self.room.wait(for_several=for_several)

    def __call__(self, made: list[tuple[Row, OutgoingText]]) -> None:
        """Hand these over, but for those whose lease might run out meanwhile, or before which the clock was moved: by
        now it may be another hour there. They are planned again."""
        in_time = self._in_time([row for row, _ in made]) if made else set()
        for row, ready in made:
            if row["id"] not in in_time:
                self.put_back(row)
            elif self.pool is None:
                self.work(row, ready)
            else:
                self.room.take(1)
                self.pool.submit(self.work, row, ready).add_done_callback(lambda _done: self.room.give())

    def _in_time(self, rows: list[Row]) -> set[int]:
        now = self.now()
        rows = [row for row in rows if abs(now - row["in_flight_at"]) < LEASE - LONGEST_CALL]
        attempts = {row["id"]: row["attempt"] for row in rows}
        try:
            with self.store.read() as connection:
                return outcomes.with_time_left(connection, attempts, LONGEST_CALL)
        except DATABASE_TROUBLE as away:
            _LOG.warning("%s texts are not handed over: the database is away (%s)", len(rows), type(away).__name__)
            return set()


@contextmanager
def handing_over(store: Store, sender: Sender, now: Callable[[], datetime], done: Round) -> Iterator[HandOver]:
    """Counts into `done`; at the end every call has ended."""
    pool = ThreadPoolExecutor(sender.at_once, thread_name_prefix="call") if sender.at_once > 1 else None
    failed: list[BaseException] = []
    receipts = Receipts(store)

    def work(row: Row, ready: OutgoingText) -> None:
        try:
            with receipts.call():
                _hand_over(store, sender, now, done, receipts, row, ready)
        except BaseException as error:
            failed.append(error)
            if pool is None:
                raise

    def back(row: Row) -> None:
        # Insisted on, since only this process knows that nothing left.
        _insist(lambda: put_back(store, row, now()), row, sender)
        done.count(other=1)

    try:
        yield HandOver(store, now, work, back, pool, Room(sender.at_once))
    finally:
        if pool is not None:
            pool.shutdown(wait=True)
    if failed:
        raise failed[0]


def _hand_over(
    store: Store,
    sender: Sender,
    now: Callable[[], datetime],
    done: Round,
    receipts: Receipts,
    row: Row,
    ready: OutgoingText,
) -> None:
    reached("handing over")
    keep = _call(store, sender, now, receipts, row, ready)
    reached("answered")
    outcome = _insist(keep, row, sender)
    done.count(sent=outcome is True, other=outcome is not True)
    if isinstance(outcome, datetime):
        done.rests_until = outcome


def _call(
    store: Store,
    sender: Sender,
    now: Callable[[], datetime],
    receipts: Receipts,
    row: Row,
    ready: OutgoingText,
) -> Callable[[], bool | datetime | None]:
    """Hand it over; how to keep what came of it: whether it was sent, or until when the number rests."""
    try:
        receipt = sender.transport.send(ready)
    except ProvenRefused as refused:
        return partial(_refused, store, row, refused, now, sender.secret)
    except OutcomeUnknown:
        return partial(_in_doubt, store, row, now)
    return partial(_taken, receipts, row, receipt, now)


def _taken(receipts: Receipts, row: Row, receipt: SentReceipt, now: Callable[[], datetime]) -> bool:
    receipts.keep(row, receipt, now())
    return True


def _refused(
    store: Store, row: Row, refused: ProvenRefused, now: Callable[[], datetime], secret: str
) -> datetime | None:
    again_at = keep_refusal(store, row, refused, now(), secret)
    # The next text would meet the same.
    return again_at if isinstance(refused, RateLimited | NotAccepted) or refused.is_about_sender else None


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
