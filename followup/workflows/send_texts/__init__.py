"""Send what is due: the only workflow that hands texts to a transport.

0. A database that is a copy, or was moved away, sends nothing (`take_over.py`).
1. Claims whose worker is gone are provably unsent: they are planned again. Texts that were in flight when their worker
   went are `unknown`: nobody can tell, so `look_up_unknown` looks, and nothing is sent again by the machine.
2. Once the number may send again, the due text that is most awaited is claimed (alerts to staff, answers, visit texts,
   invites).
3. In one transaction it is asked once more whether the text is still wanted (consent, hours, a visit opened, a booking
   made); it is rendered; and `in_flight` is committed before the first byte leaves.
4. The transport takes it. What it answers moves the row on: sent, failed, unknown, or planned again where the refusal
   is proven and may pass. Several may be handed over at once.

If another process was first, each move finds another state or attempt and changes nothing. If this process dies before
`in_flight`, nothing left; after it, the text becomes `unknown`. If it stood still for so long that its lease might run
out while it hands the text over, it hands over nothing and says so. A text that nobody can make ready fails with its
reason, and the others go on. If the database goes away, nothing leaves; what was answered is kept when it is back.
"""

from __future__ import annotations

import logging
from collections.abc import Callable
from datetime import datetime, timedelta
from typing import Any

from followup.core.segments import segments
from followup.core.shop import Shop
from followup.core.text import reason
from followup.points import reached
from followup.storage import alerts, consents, inbox, installation, outbox, outcomes, pace, shops
from followup.storage.rows import Row
from followup.storage.store import DATABASE_TROUBLE, Store
from followup.transports.transport import LONGEST_VALIDITY_SECONDS, OutgoingText
from followup.workflows.send_texts.body import CannotBeRendered, body_of
from followup.workflows.send_texts.check import Verdict, ask_once_more
from followup.workflows.send_texts.hand_over import LEASE, LONGEST_CALL, Round, Sender, SentCount, handing_over
from followup.workflows.send_texts.outcome import FIRST_LOOK
from followup.workflows.send_texts.refused_account import note_that_texts_leave

__all__ = ["LEASE", "LONGEST_CALL", "Sender", "SentCount", "send_texts"]
# A clock that was moved back must not silence a number.
LONGEST_REST = timedelta(days=1)
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
        for _ in range(most):
            hand_over.wait_for_room()
            if sender.is_over() or done.rests_until is not None or not _wait_for_pace(store, shop_id, number, sender):
                break
            row = _claim_next(store, shop_id, now(), worker, sender.holds_back)
            if row is None:
                break
            ready = _make_ready_or_fail(store, shop_id, sender, now(), row)
            if ready is None:
                done.other += 1
                continue
            reached("in flight kept")
            hand_over(row, ready)
    if done.sent:
        note_that_texts_leave(store, shop_id, now())
    return SentCount(done.sent, done.other, done.rests_until)


def _still_rests(until: datetime | None, now: datetime) -> bool:
    return until is not None and now < until < now + LONGEST_REST


def _wait_for_pace(store: Store, shop_id: int, number: str, sender: Sender) -> bool:
    """Wait until the number may send; False where the process is to end first. What is most awaited is chosen after."""
    while sender.segments_per_second is not None:
        with store.read() as connection:
            seconds = pace.free_in(connection, shop_id, number)
        if not seconds:
            break
        sender.wait(seconds)
        if sender.is_over():
            return False
    return True


def _claim_next(store: Store, shop_id: int, now: datetime, worker: str, without: tuple[str, ...]) -> Row | None:
    claimed = None
    with store.write() as connection:
        for row in outbox.due_texts(connection, shop_id, now, 5, without):
            attempt = outbox.claim(connection, row["id"], worker, LEASE)
            if attempt is not None:
                claimed = {**row, "attempt": attempt, "state": "claimed"}
                break
        reached("claim written")
    reached("claim kept")
    return claimed


def _make_ready_or_fail(store: Store, shop_id: int, sender: Sender, now: datetime, row: Row) -> OutgoingText | None:
    """The same as `_make_ready`; a text that nobody can make ready fails with its reason, and the next ones go on."""
    try:
        return _make_ready(store, shop_id, sender, now, row)
    except DATABASE_TROUBLE:
        raise
    except Exception as poison:
        _LOG.exception("text %s cannot be made ready", row["id"])
        # Only the name: the words of a fault may quote the text.
        because = f"it cannot be made ready ({type(poison).__name__}): look into the log"
        with store.write() as connection:
            outbox.move(connection, row["id"], row["attempt"], "claimed", "failed", state_because=because)
        return None


def _make_ready(store: Store, shop_id: int, sender: Sender, now: datetime, row: Row) -> OutgoingText | None:
    """The text to hand over, with `in_flight` committed; None where it is not wanted, not now, or cannot be said."""
    with store.write() as connection:
        if not installation.sends(connection):
            outbox.move(connection, row["id"], row["attempt"], "claimed", "planned")
            return None
        shop = shops.load_shop(connection, shop_id)
        consents.lock(connection, shop_id, row["number"])
        needs = _needs_registration(sender, row["number"])
        verdict = ask_once_more(connection, shop, row, now, needs_registration=needs, secret=sender.secret)
        if verdict.what != "send":
            _put_aside(connection, row, verdict, now)
            return None
        try:
            rendered = body_of(connection, shop, row, now)
        except CannotBeRendered as cannot:
            outbox.move(connection, row["id"], row["attempt"], "claimed", "failed", state_because=str(cannot)[:200])
            return None
        seconds = _valid_seconds(row, verdict.lands_by, now)
        if seconds < 1:
            # Looked at again when its time or its hours are over: dropped, or planned for the next hours.
            outbox.move(connection, row["id"], row["attempt"], "claimed", "planned", due_at=now + LEASE)
            return None
        count = segments(rendered.text).count
        rate = sender.segments_per_second
        if rate is not None and not pace.take(connection, shop_id, shop.texts_from, count, rate):
            # Another process has just sent from the number.
            outbox.move(connection, row["id"], row["attempt"], "claimed", "planned")
            return None
        # Made before the text is in flight: what cannot be handed over must not look as if it had been.
        ready = _outgoing(shop, sender, row, rendered.text, seconds)
        reached("rendered")
        moved = outbox.move(
            connection, row["id"], row["attempt"], "claimed", "in_flight", body=rendered.text, in_flight_at=now,
            segments=count, wording_version=rendered.wording_version,
        )  # fmt: skip
        if not moved:
            return None
        _note_question(connection, shop, row, now)
        reached("in flight written")
    return ready


def _needs_registration(sender: Sender, number: str) -> bool:
    """US numbers get texts through a provider only once brand and campaign are registered with the carriers."""
    return sender.transport.address is not None and number.startswith("+1") and not sender.is_registered


def _put_aside(connection: Any, row: Row, verdict: Verdict, now: datetime) -> None:
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


def _note_question(connection: Any, shop: Shop, row: Row, now: datetime) -> None:
    """What an invite or visit text asks is what the thread has asked from now on; answers noted theirs already."""
    if row["kind"] not in ("invite", "visit") or row["phone_id"] is None:
        return
    state, thread = inbox.conversation_of(connection, row["phone_id"])
    if row["asks"]:
        state.update(asked=row["asks"], asked_at=now.isoformat(), asked_before=state.get("asked"), questions_back=0)
    about = {"vehicle_id": row["vehicle_id"], "reason_id": row["reason_id"], "items": row["facts"].get("items", [])}
    thread.update({key: value for key, value in about.items() if value})
    thread["advised"] = row["facts"].get("advised", [])
    if row["asks"]:
        thread["offered"] = row["offered"] or []
    inbox.keep_conversation(connection, shop.id, row["phone_id"], now, state, thread)
