"""Send what is due: the only workflow that hands texts to a transport.

0. A database that is a copy, or was moved away, sends nothing (`take_over.py`).
1. Claims whose worker is gone are provably unsent: they are planned again. Texts that were in flight when their worker
   went are `unknown`: nobody can tell, so `look_up_unknown` looks, and nothing is sent again by the machine.
2. Once the number may send again, the due texts that are most awaited are claimed (alerts to staff, answers, visit
   texts, invites): as many as can be handed over at once, each to another number.
3. In one transaction it is asked once more whether each is still wanted (consent, hours, a visit opened, a booking
   made); it is rendered; and `in_flight` is committed before the first byte leaves.
4. The transport takes them, each in a call of its own. What it answers moves the row on: sent, failed, unknown, or
   planned again where the refusal is proven and may pass.

If another process was first, each move finds another state or attempt and changes nothing. If this process dies before
`in_flight`, nothing left; after it, the text becomes `unknown`. If it stood still for so long that its lease might run
out while it hands the text over, it hands over nothing and says so. A text that nobody can make ready fails with its
reason, and the others go on. If the database goes away, nothing leaves; what was answered is kept when it is back.
"""

from __future__ import annotations

import logging
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from typing import Any

from followup.core.segments import segments
from followup.core.shop import Shop
from followup.core.text import reason
from followup.points import reached
from followup.storage import alerts, consents, inbox, installation, outbox, outcomes, pace, shops
from followup.storage.rows import Row
from followup.storage.store import DATABASE_TROUBLE, Connection, Store
from followup.transports.transport import LONGEST_VALIDITY_SECONDS, OutgoingText
from followup.workflows.send_texts.body import CannotBeRendered, body_of
from followup.workflows.send_texts.check import Verdict, ask_once_more
from followup.workflows.send_texts.hand_over import LEASE, LONGEST_CALL, Round, Sender, SentCount, handing_over
from followup.workflows.send_texts.outcome import FIRST_LOOK
from followup.workflows.send_texts.refused_account import note_that_texts_leave
from followup.workflows.send_texts.sight import Sight, look

__all__ = ["LEASE", "LONGEST_CALL", "Sender", "SentCount", "send_texts"]
# A clock that was moved back must not silence a number.
LONGEST_REST = timedelta(days=1)
# Texts of three segments to sixteen numbers are then a sixteenth of what a number may send in a second at most.
PART_OF_A_SECOND = 48
# Due texts that are looked at beyond those that are claimed: some may be for the same number.
SPARE = 4
_LOG = logging.getLogger(__name__)


def send_texts(
    store: Store, shop_id: int, sender: Sender, now: Callable[[], datetime], worker: str, most: int = 50
) -> SentCount:
    """Send up to `most` due texts of the shop; see the module's words."""
    with store.read() as connection:
        where = installation.standing(connection).state
    if where not in ("new", "here"):
        return SentCount()
    with store.write() as connection:
        if not installation.move_in(connection, now()).sends:
            return SentCount()
        outbox.release_expired_claims(connection, shop_id)
        outcomes.mark_lost_in_flight(connection, shop_id, now() + FIRST_LOOK)
        number = shops.load_shop(connection, shop_id).texts_from
        reached("expired released")
    done = Round(sender.rests_until if _still_rests(sender.rests_until, now()) else None)
    with handing_over(store, sender, now, done) as hand_over:
        begun, segments_ahead, more_wait, together = 0, 1, False, most_together(sender)
        while begun < most:
            room = min(hand_over.wait_for_room(for_several=more_wait), together, most - begun)
            if sender.is_over() or done.rests_until is not None:
                break
            if not _wait_for_pace(store, shop_id, number, sender, segments_ahead):
                break
            claimed = _claim_next(store, shop_id, now(), worker, sender.holds_back, room)
            if not claimed:
                break
            begun, more_wait = begun + len(claimed), len(claimed) == room and together > 1
            made = _make_ready_or_fail(store, shop_id, sender, now, claimed)
            done.count(other=len(claimed) - len(made.ready))
            segments_ahead = made.waits_for or 1
            for _ in made.ready:
                reached("in flight kept")
            hand_over(made.ready)
    if done.sent:
        note_that_texts_leave(store, shop_id, now())
    return SentCount(done.sent, done.other, done.rests_until)


def most_together(sender: Sender) -> int:
    """How many texts may be put in flight in one transaction: as many as are handed over at once, where that is a small
    part of what the number may send in a second."""
    rate = sender.segments_per_second
    return sender.at_once if rate is None else max(1, min(sender.at_once, int(rate / PART_OF_A_SECOND)))


def _still_rests(until: datetime | None, now: datetime) -> bool:
    return until is not None and now < until < now + LONGEST_REST


def _wait_for_pace(store: Store, shop_id: int, number: str, sender: Sender, segments_ahead: int) -> bool:
    """Wait until the number may send; False where the process is to end first. What is most awaited is chosen after."""
    while (rate := sender.segments_per_second) is not None:
        with store.read() as connection:
            seconds = pace.free_in(connection, shop_id, number, segments_ahead, rate)
        if not seconds:
            break
        sender.wait(seconds)
        if sender.is_over():
            return False
    return True


def _claim_next(
    store: Store, shop_id: int, now: datetime, worker: str, without: tuple[str, ...], most: int
) -> list[Row]:
    """Up to so many texts, each to another number: what one of them changes, the next one asks about."""
    with store.write() as connection:
        by_number: dict[str, Row] = {}
        for row in outbox.due_texts(connection, shop_id, now, most + SPARE, without):
            by_number.setdefault(row["number"], row)
        wanted = list(by_number.values())[:most]
        attempts = outbox.claim_all(connection, [row["id"] for row in wanted], worker, LEASE) if wanted else {}
        reached("claim written")
    reached("claim kept")
    return [{**row, "attempt": attempts[row["id"]], "state": "claimed"} for row in wanted if row["id"] in attempts]


@dataclass
class _Made:
    """Texts that are in flight and were not handed over yet; `waits_for`: the segments for which the number was not
    free, so that everything waits; `others`: claimed texts about whose numbers somebody else decides at this moment."""

    ready: list[tuple[Row, OutgoingText]] = field(default_factory=list)
    waits_for: int = 0
    others: list[Row] = field(default_factory=list)

    def __add__(self, other: _Made) -> _Made:
        return _Made(self.ready + other.ready, max(self.waits_for, other.waits_for), self.others + other.others)


def _make_ready_or_fail(
    store: Store, shop_id: int, sender: Sender, now: Callable[[], datetime], claimed: list[Row]
) -> _Made:
    """The same as `_make_ready`; a text that nobody can make ready fails with its reason, and the others go on."""
    try:
        made = _make_ready(store, shop_id, sender, now(), claimed)
    except DATABASE_TROUBLE:
        raise
    except Exception as poison:
        if len(claimed) > 1:
            # One of them spoiled the transaction of all: each gets its own.
            return _each_alone(store, shop_id, sender, now, claimed)
        (row,) = claimed
        _LOG.exception("text %s cannot be made ready", row["id"])
        # Only the name: the words of a fault may quote the text.
        because = f"it cannot be made ready ({type(poison).__name__}): look into the log"
        with store.write() as connection:
            outbox.move(connection, row["id"], row["attempt"], "claimed", "failed", state_because=because)
        return _Made()
    return made + _each_alone(store, shop_id, sender, now, made.others)


def _each_alone(store: Store, shop_id: int, sender: Sender, now: Callable[[], datetime], claimed: list[Row]) -> _Made:
    return sum((_make_ready_or_fail(store, shop_id, sender, now, [row]) for row in claimed), _Made())


def _make_ready(store: Store, shop_id: int, sender: Sender, now: datetime, claimed: list[Row]) -> _Made:
    """The texts to hand over, with `in_flight` committed, without those that are not wanted, not now, or cannot be
    said."""
    with store.write() as connection:
        if not installation.sends(connection):
            _put_back(connection, claimed)
            return _Made()
        shop = shops.load_shop(connection, shop_id)
        claimed, others = _locked(connection, shop_id, claimed)
        sight = look(connection, shop, claimed, now, sender.secret)
        said = [one for row in claimed if (one := _said(connection, shop, sender, sight, row, now))]
        count = sum(one.segments for one in said)
        rate = sender.segments_per_second
        if said and rate is not None and not pace.take(connection, shop_id, shop.texts_from, count, rate):
            # The number is not free for so many segments, or another process has just sent from it.
            _put_back(connection, [one.row for one in said])
            return _Made([], count, others)
        flying = _put_in_flight(connection, shop, sight, said, now) if said else []
        return _Made([({**one.row, "in_flight_at": now}, one.ready) for one in flying], 0, others)


def _locked(connection: Connection, shop_id: int, claimed: list[Row]) -> tuple[list[Row], list[Row]]:
    """The texts whose numbers are locked now, and the others; one alone waits for its lock."""
    if len(claimed) == 1:
        consents.lock(connection, shop_id, claimed[0]["number"])
        return claimed, []
    mine = consents.lock_free(connection, shop_id, [row["number"] for row in claimed])
    return [row for row in claimed if row["number"] in mine], [row for row in claimed if row["number"] not in mine]


@dataclass(frozen=True)
class _Said:
    """A text that is wanted now, in its words."""

    row: Row
    ready: OutgoingText
    segments: int
    wording_version: int | None


def _said(connection: Connection, shop: Shop, sender: Sender, sight: Sight, row: Row, now: datetime) -> _Said | None:
    """The text in its words; None where it is not wanted, not now, or cannot be said, which its row then says."""
    needs = _needs_registration(sender, row["number"])
    verdict = ask_once_more(connection, shop, row, sight, now, needs_registration=needs)
    if verdict.what != "send":
        _put_aside(connection, row, verdict, now)
        return None
    try:
        rendered = body_of(connection, shop, row, now, sight, sender.link_base)
    except CannotBeRendered as cannot:
        outbox.move(connection, row["id"], row["attempt"], "claimed", "failed", state_because=str(cannot)[:200])
        return None
    seconds = _valid_seconds(row, verdict.lands_by, now)
    if seconds < 1:
        # Looked at again when its time or its hours are over: dropped, or planned for the next hours.
        outbox.move(connection, row["id"], row["attempt"], "claimed", "planned", due_at=now + LEASE)
        return None
    # Made before the text is in flight: what cannot be handed over must not look as if it had been.
    ready = _outgoing(shop, sender, row, rendered.text, seconds)
    return _Said(row, ready, segments(rendered.text).count, rendered.wording_version)


def _put_in_flight(connection: Connection, shop: Shop, sight: Sight, said: list[_Said], now: datetime) -> list[_Said]:
    """Those whose rows did not go on meanwhile."""
    reached("rendered")
    news = {
        one.row["id"]: {
            "body": one.ready.body, "in_flight_at": now, "segments": one.segments,
            "wording_version": one.wording_version,
        }
        for one in said
    }  # fmt: skip
    attempts = {one.row["id"]: one.row["attempt"] for one in said}
    moved = outbox.move_all(connection, attempts, "claimed", "in_flight", news)
    flying = [one for one in said if one.row["id"] in moved]
    asks = [one.row for one in flying if one.row["kind"] in ("invite", "visit") and one.row["phone_id"] is not None]
    inbox.keep_conversations(connection, shop.id, now, {row["phone_id"]: _asking(sight, row, now) for row in asks})
    if flying:
        reached("in flight written")
    return flying


def _put_back(connection: Connection, claimed: list[Row]) -> None:
    for row in claimed:
        outbox.move(connection, row["id"], row["attempt"], "claimed", "planned")


def _needs_registration(sender: Sender, number: str) -> bool:
    """US numbers get texts through a provider only once brand and campaign are registered with the carriers."""
    return sender.transport.address is not None and number.startswith("+1") and not sender.is_registered


def _put_aside(connection: Connection, row: Row, verdict: Verdict, now: datetime) -> None:
    if verdict.what == "later":
        outbox.move(connection, row["id"], row["attempt"], "claimed", "planned", due_at=verdict.at)
        return
    because = verdict.because[:200]
    is_mine = outbox.move(connection, row["id"], row["attempt"], "claimed", "dropped", state_because=because)
    if is_mine and verdict.is_for_a_call:
        alerts.raise_alert(
            connection, shop_id=row["shop_id"], kind="phone_task", phone_id=row["phone_id"],
            vehicle_id=row["vehicle_id"], request_id=row["request_id"], raised_at=now, raised_by=f"text:{row['id']}",
            says=f"could not be told by text: {reason(row['reason']).words} ({verdict.because})",
        )  # fmt: skip


def _valid_seconds(row: Row, lands_by: datetime | None, now: datetime) -> int:
    """How long the provider may try. It may take the text as late as our lease ends, and nothing lands after hours."""
    until = min((one for one in (row["valid_until"], lands_by) if one is not None), default=None)
    seconds = int((until - now - LEASE).total_seconds()) if until else LONGEST_VALIDITY_SECONDS
    return min(seconds, LONGEST_VALIDITY_SECONDS)


def _outgoing(shop: Shop, sender: Sender, row: Row, body: str, valid_seconds: int) -> OutgoingText:
    return OutgoingText(
        to=row["number"],
        sender=shop.texts_from,
        body=body,
        status_callback_url=f"{sender.public_base_url}/hooks/status/{row['public_id']}/{row['attempt']}",
        valid_seconds=valid_seconds,
        public_id=row["public_id"],
        attempt=row["attempt"],
    )


def _asking(sight: Sight, row: Row, now: datetime) -> tuple[dict[str, Any], dict[str, Any]]:
    """What an invite or visit text asks is what the thread has asked from now on; answers noted theirs already."""
    known_state, known_thread = sight.known.conversations.get(row["phone_id"], ({}, {}))
    state, thread = dict(known_state), dict(known_thread)
    if row["asks"]:
        state.update(asked=row["asks"], asked_at=now.isoformat(), asked_before=state.get("asked"), questions_back=0)
    about = {"vehicle_id": row["vehicle_id"], "reason_id": row["reason_id"], "items": row["facts"].get("items", [])}
    thread.update({key: value for key, value in about.items() if value})
    thread["advised"] = row["facts"].get("advised", [])
    if row["asks"]:
        thread["offered"] = row["offered"] or []
    return state, thread
