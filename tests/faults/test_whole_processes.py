"""Processes as a shop runs them: started anew and not forked, ticking until they are told to end."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
import threading
import time

import pytest

from followup.rehearsal.faults.fate import ANSWERED, Fates
from followup.rehearsal.faults.provider import ACCOUNT, TOKEN, Provider
from followup.rehearsal.faults.shop import BEGINS_AT, Shop
from followup.rehearsal.faults.worker import READ_SECONDS, Order
from followup.storage import outbox, shops
from followup.storage.store import Store, make_engine
from followup.transports.transport import OutcomeUnknown, OutgoingText
from followup.transports.twilio import Twilio
from tests.faults.ground import Ground


def _states(shop: Shop) -> list[str]:
    store = Store(make_engine(shop.url))
    with store.read() as connection:
        found = outbox.texts_of_shop(connection, shops.shop_codes(connection)[0][0])
    store.close()
    return [row["state"] for row in found]


def test_a_process_that_is_started_anew_dies_at_its_point(ground: Ground) -> None:
    """What a fork of the nursery does is what a process does that Python starts."""
    with ground.shop("sqlite") as shop, Provider(Fates(21, first=(ANSWERED,)), lambda: BEGINS_AT) as provider:
        shop.set_clock(BEGINS_AT)
        arguments = ("work", "--until", BEGINS_AT.isoformat())
        order = Order(arguments, shop.environment(provider.address), str(shop.folder / "log"), at="answered", nth=2)
        file = shop.folder / "order.json"
        file.write_text(order.to_json(), encoding="utf-8")
        ended = subprocess.run([sys.executable, "-m", "followup.rehearsal.faults.worker", str(file)], timeout=60)
        assert ended.returncode == -signal.SIGKILL
        assert len(provider.taken) == 2
        assert sorted(set(_states(shop))) == ["in_flight", "planned", "sent"]


def _end_one(ground: Ground, seed: int) -> None:
    """Told to end while the provider keeps silent, a process ends soon and leaves nothing in flight."""
    fates = Fates(seed, first=(ANSWERED, "silent"))
    with ground.shop("sqlite") as shop, Provider(fates, lambda: BEGINS_AT) as provider:
        shop.set_clock(BEGINS_AT)
        pid = ground.nursery.start(Order(("work",), shop.environment(provider.address), str(shop.folder / "log")))
        for _ in range(4000):
            if any(post.fate.how == "silent" for post in provider.posts):
                break
            threading.Event().wait(0.005)
        began = time.monotonic()
        os.kill(pid, signal.SIGTERM)
        (ended,) = ground.nursery.wait([pid], 30)
        assert (ended.how, ended.number) == ("exited", 0), (shop.folder / "log").read_text()
        assert time.monotonic() - began < READ_SECONDS + 5
        states = _states(shop)
        assert "in_flight" not in states and "claimed" not in states
        assert states.count("unknown") == 1 and "planned" in states


def test_a_process_that_is_told_to_end_leaves_nothing_in_flight(ground: Ground) -> None:
    _end_one(ground, 22)


@pytest.mark.faults
def test_fifty_that_are_told_to_end_leave_nothing_in_flight(ground: Ground) -> None:
    for seed in range(50):
        _end_one(ground, seed)


@pytest.mark.faults
def test_a_call_to_a_silent_provider_ends_within_35_seconds() -> None:
    """The provider's users report accepts up to 26 s late, so the client waits for longer than that."""
    text = OutgoingText(
        "+13125550147", "+13125550100", "hello", "http://127.0.0.1/hooks/status/abc/1", 600, "abc", 1
    )  # fmt: skip
    with Provider(Fates(1, first=("silent",)), lambda: BEGINS_AT) as provider:
        began = time.monotonic()
        with pytest.raises(OutcomeUnknown):
            Twilio(ACCOUNT, [TOKEN], provider.address).send(text)
        assert 26 < time.monotonic() - began < 35
        assert len(provider.posts) == 1
