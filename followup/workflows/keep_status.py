"""Keep a delivery report and bind it to its text.

Reports come in any order, several times, and even before the answer to the request that they report on: each is kept
once, ranks only rise, and a report whose address names the attempt proves that a text of unknown outcome did leave.
A permanent problem acts: an opted-out number is a stop in the ledger, a bad number is marked.
"""

from __future__ import annotations

from datetime import datetime

from followup.core.wall import day_of
from followup.storage import consents, inbox, outbox, outcomes, shops, stops
from followup.storage.rows import Row
from followup.storage.store import Connection, Store
from followup.transports.transport import BadNumber, OptedOut, StatusReport


def keep_status(store: Store, public_id: str, attempt: int, report: StatusReport, now: datetime, secret: str) -> bool:
    """Keep one report about an attempt of the text of that public id; False where there is no such text (kept as a
    dead letter)."""
    with store.write() as connection:
        text = outbox.text_of_public_id(connection, public_id)
        if text is None:
            body = {"public_id": public_id, "id": report.provider_id, "status": report.status}
            which = f"{report.provider_id} {report.status}"
            inbox.add_dead_letter(connection, None, now, "a delivery report about no text of ours", body, which)
            return False
        consents.lock(connection, text["shop_id"], text["number"])
        code = str(report.code) if report.code else None
        is_news = inbox.keep_status(
            connection, shop_id=text["shop_id"], public_id=public_id, provider_id=report.provider_id,
            status=report.status, error_code=code, at=now,
        )  # fmt: skip
        outcomes.bind_delivery(connection, text["id"], attempt, report.provider_id, report.status, code, now)
        # A report that comes again, or is replayed, must not undo what the customer did since.
        if is_news is not None:
            _act_on_problem(connection, text, report, now, secret)
    return True


def _act_on_problem(connection: Connection, text: Row, report: StatusReport, now: datetime, secret: str) -> None:
    if report.problem is BadNumber:
        stops.mark_bad(connection, text, f"the provider says: {report.problem.__doc__}", now)
    if report.problem is OptedOut:
        on = day_of(now, shops.load_shop(connection, text["shop_id"]).zone)
        stops.take_back_for_provider(connection, text["shop_id"], text["number"], now, on, secret)
