"""What the transport made of a text moves its row on: sent, unknown, or refused and tried again or at an end.

Each move names the attempt that was handed over. If the row went on meanwhile, nothing changes.
"""

from __future__ import annotations

import logging
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import datetime, timedelta
from random import Random

from followup.core.wall import day_of
from followup.points import reached
from followup.storage import consents, outbox, outcomes, shops, stops
from followup.storage.rows import Row
from followup.storage.store import DATABASE_TROUBLE, Connection, Store
from followup.transports.transport import BadNumber, NotAccepted, OptedOut, ProvenRefused, SentReceipt
from followup.workflows.send_texts.refused_account import tell_owner

# Late accepts of up to 26 s after a broken call were reported by users of the provider.
FIRST_LOOK = timedelta(seconds=30)
MOST_REFUSALS = 5
BACK_OFF = timedelta(minutes=2)
IN_LINE = timedelta(seconds=30)
LONGEST_BACK_OFF = timedelta(minutes=30)
# So long a receipt waits for those of other calls: a small part of what a call to a provider takes.
TOGETHER_SECONDS = 0.003

_LOG = logging.getLogger(__name__)


@dataclass
class _Kept:
    """A receipt that waits to be kept, and what came of it."""

    row: Row
    receipt: SentReceipt
    at: datetime
    is_written: bool = False
    failed: BaseException | None = None


class Receipts:
    """Keeps that the provider took texts. Calls that end shortly after each other, or while another one's receipt is
    written, are kept together in one transaction; none goes on before its own is on the disk."""

    def __init__(self, store: Store) -> None:
        self._store = store
        self._waiting: list[_Kept] = []
        self._under_way = 0
        self._changed, self._writing = threading.Condition(), threading.Lock()

    @contextmanager
    def call(self) -> Iterator[None]:
        """A call, up to the end of keeping what it said."""
        self._add(1)
        try:
            yield
        finally:
            self._add(-1)

    def _add(self, calls: int) -> None:
        with self._changed:
            self._under_way += calls
            self._changed.notify_all()

    def keep(self, row: Row, receipt: SentReceipt, now: datetime) -> None:
        """The provider took it."""
        mine = _Kept(row, receipt, now)
        with self._changed:
            self._waiting.append(mine)
            self._changed.notify_all()
        with self._writing:
            if not mine.is_written:
                self._write(self._together())
        if mine.failed is not None:
            raise mine.failed
        reached("outcome kept")

    def _together(self) -> list[_Kept]:
        """What waits to be written now: that of all calls, where they end within a moment."""
        with self._changed:
            self._changed.wait_for(lambda: len(self._waiting) >= self._under_way, TOGETHER_SECONDS)
            together, self._waiting = self._waiting, []
        return together

    def _write(self, together: list[_Kept]) -> None:
        """Write them in one transaction. Where one of them spoils it, each gets its own."""
        for one in together:
            one.is_written = True
        owners = {one.receipt.provider_id: one.row["id"] for one in together}
        try:
            with self._store.write() as connection:
                outcomes.give_up_found(connection, owners, together[0].at)
                _note_receipts(connection, together)
                reached("outcome written")
        except BaseException as failed:
            if len(together) > 1 and not isinstance(failed, DATABASE_TROUBLE):
                for one in together:
                    self._write([one])
            else:
                for one in together:
                    one.failed = failed


def _note_receipts(connection: Connection, together: list[_Kept]) -> None:
    said = {
        (one.row["id"], one.row["attempt"]): (one.receipt.provider_id, one.receipt.status, one.at) for one in together
    }
    kept = outcomes.keep_receipts(connection, said)
    for text_id, attempt in said:
        if text_id not in kept:
            # Its delivery report was faster, or a person had it sent again while this process stood still.
            _LOG.info("text %s went on before the receipt of attempt %s came", text_id, attempt)


def keep_doubt(store: Store, row: Row, now: datetime) -> None:
    """Nobody can tell: it is looked up."""
    with store.write() as connection:
        outbox.move(
            connection, row["id"], row["attempt"], "in_flight", "unknown", look_at=now + FIRST_LOOK,
            state_because="the provider did not say whether it took the text",
        )  # fmt: skip
        reached("outcome written")
    reached("outcome kept")


def put_back(store: Store, row: Row, now: datetime) -> None:
    """This process knows that it handed nothing over: planned again, even where another one doubts it already."""
    with store.write() as connection:
        outbox.move(
            connection, row["id"], row["attempt"], ("in_flight", "unknown"), "planned",
            due_at=max(now, row["due_at"]), in_flight_at=None,
            look_at=None, looks=0, state_because="the process stood still before it handed the text over",
        )  # fmt: skip


def keep_refusal(store: Store, row: Row, refused: ProvenRefused, now: datetime, secret: str) -> datetime | None:
    """A proven refusal: tried again at the instant that this gives, or None: at an end. Permanent ones act on consent
    and number.

    What was provably refused did not leave, so it is no longer marked as having been in flight.
    """
    code = str(refused.code) if refused.code else None
    counted = row["refused_count"] + int(refused.counts_as_attempt)
    is_over = refused.is_permanent or counted >= MOST_REFUSALS
    news = {"error_code": code, "refused_count": counted, "state_because": refused.words[:200], "in_flight_at": None}
    again_at = now + _wait(row, refused, counted)
    with store.write() as connection:
        consents.lock(connection, row["shop_id"], row["number"])
        if is_over:
            outbox.move(connection, row["id"], row["attempt"], "in_flight", "failed", **news)
        else:
            outbox.move(connection, row["id"], row["attempt"], "in_flight", "planned", due_at=again_at, **news)
        if refused.is_about_sender:
            tell_owner(connection, row, refused, now)
        if isinstance(refused, OptedOut):
            on = day_of(now, shops.load_shop(connection, row["shop_id"]).zone)
            stops.take_back_for_provider(connection, row["shop_id"], row["number"], now, on, secret)
        if isinstance(refused, BadNumber):
            stops.mark_bad(connection, row, refused.words, now)
        reached("outcome written")
    reached("outcome kept")
    return None if is_over else again_at


def _wait(row: Row, refused: ProvenRefused, counted: int) -> timedelta:
    """How long to back off: as the provider says, else twice as long each time, never for all texts alike."""
    if refused.retry_after_seconds:
        return timedelta(seconds=refused.retry_after_seconds)
    times: int = counted - 1 if refused.counts_as_attempt else row["attempt"] - 1
    if isinstance(refused, NotAccepted):
        # The whole number rests, cautions too: when the provider is back it is to be found soon.
        times = min(times, 1)
    first = BACK_OFF if refused.counts_as_attempt else IN_LINE
    jitter = Random(f"{row['public_id']}/{row['attempt']}").uniform(1.0, 1.5)
    return min(first * (1 << min(times, 10)), LONGEST_BACK_OFF) * jitter
