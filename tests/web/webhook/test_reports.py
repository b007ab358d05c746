"""Delivery reports in every order end alike, and the earliest of them binds its text.

Source: fault I3 of this project's list. No page of the provider promises an order, none is sent for the first status,
and one may come before the answer to the request that it is about.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta
from itertools import count, permutations
from typing import Any

import pytest

from followup.core.text import DELIVERY_RANK
from followup.storage import outbox, outcomes, tables
from tests.transports.account import ACCOUNT
from tests.web.webhook.conftest import Hooks
from tests.workflows.counter import NOW

WAY = ("queued", "sending", "sent", "delivered")
ENDS = ("delivered", "undelivered", "failed", "canceled", "read")
CODES = {"undelivered": "30003", "failed": "30007"}
RECEIPT = "the answer to the request"
_numbers = count(1)


def _in_flight(hooks: Hooks) -> tuple[int, str, str]:
    """A text that was just handed over: its row, its public id, and the id that the provider will give it."""
    number = next(_numbers)
    text_id = hooks.counter.plan(cause=f"report {number}")
    with hooks.counter.store.write() as connection:
        outbox.change_text(connection, text_id, state="in_flight", attempt=1, in_flight_at=NOW, body="hello")
        row = outbox.load_text(connection, text_id)
    assert row is not None
    return text_id, row["public_id"], f"SM{number:032x}"


def _happen(hooks: Hooks, events: Sequence[str]) -> tuple[Any, ...]:
    """Let it happen in that order; how the row ended. No end is ever taken back for less."""
    text_id, public_id, sid = _in_flight(hooks)
    best = 0
    for event in events:
        if event == RECEIPT:
            with hooks.counter.store.write() as connection:
                outcomes.keep_receipt(connection, text_id, 1, sid, "accepted", NOW + timedelta(seconds=1))
        else:
            form = {"AccountSid": ACCOUNT, "MessageSid": sid, "MessageStatus": event}
            form.update({"ErrorCode": CODES[event]} if event in CODES else {})
            assert hooks.post(form, f"/hooks/status/{public_id}/1") == 204
        with hooks.counter.store.read() as connection:
            row = outbox.load_text(connection, text_id)
        assert row is not None
        assert (row["state"], row["provider_id"]) == ("sent", sid), f"the first of {events} binds it"
        assert DELIVERY_RANK[row["delivery"]] >= best, f"{events}: {row['delivery']} after better"
        best = DELIVERY_RANK[row["delivery"]]
    return row["state"], row["delivery"], row["error_code"], row["attempt"]


@pytest.mark.parametrize("at", range(5))
def test_all_orders_of_a_delivery_end_alike(one_hooks: Hooks, at: int) -> None:
    """24 orders, with the answer to the request at each place among them."""
    ends = {_happen(one_hooks, [*order[:at], RECEIPT, *order[at:]]) for order in permutations(WAY)}
    assert ends == {("sent", "delivered", None, 1)}


def test_all_orders_end_alike_on_each_database_where_no_answer_came(hooks: Hooks) -> None:
    assert {_happen(hooks, order) for order in permutations(WAY)} == {("sent", "delivered", None, 1)}


@pytest.mark.parametrize("end", ["undelivered", "failed"])
def test_all_orders_of_a_failure_end_alike(one_hooks: Hooks, end: str) -> None:
    for at in range(5):
        orders = permutations(("queued", "sending", "sent", end))
        ends = {_happen(one_hooks, [*order[:at], RECEIPT, *order[at:]]) for order in orders}
        assert ends == {("sent", end, CODES[end], 1)}


def test_ends_that_contradict_each_other_end_alike_and_arrival_counts_more(one_hooks: Hooks) -> None:
    assert len({DELIVERY_RANK[one] for one in ENDS}) == len(ENDS)
    for pair, winner in ((("delivered", "undelivered"), "delivered"), (("failed", "undelivered"), "undelivered"),
                         (("delivered", "failed"), "delivered"), (("read", "delivered"), "read")):  # fmt: skip
        ends = {_happen(one_hooks, order)[1] for order in permutations((*pair, "sent", "queued"))}
        assert ends == {winner}


def test_a_report_that_comes_again_is_kept_once(hooks: Hooks) -> None:
    _happen(hooks, [*WAY, *WAY, RECEIPT, *reversed(WAY)])
    assert [row["status"] for row in hooks.rows(tables.status_reports)] == list(WAY)


def test_reports_at_once_end_alike(hooks: Hooks) -> None:
    text_id, public_id, sid = _in_flight(hooks)
    form = {"AccountSid": ACCOUNT, "MessageSid": sid}
    hooks.at_once(
        *[lambda one=one: hooks.post({**form, "MessageStatus": one}, f"/hooks/status/{public_id}/1") for one in WAY * 4]
    )
    assert set(hooks.answers) == {204}
    with hooks.counter.store.read() as connection:
        row = outbox.load_text(connection, text_id)
    assert row is not None and (row["state"], row["provider_id"], row["delivery"]) == ("sent", sid, "delivered")
    assert len(hooks.rows(tables.status_reports)) == 4
