"""A trial of what comes in: the pages are killed around their commits while the provider posts, and started again.

Acknowledged means stored: whatever was answered with a good status is looked for in the database after each kill. What
was not answered is posted again, as a provider may, and some of what was answered too; nothing of it counts twice.
"""

from __future__ import annotations

import os
import signal
import threading
from collections import Counter
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, field
from http.client import HTTPConnection, HTTPException
from random import Random
from urllib.parse import urlencode

from followup.rehearsal.faults.nursery import Nursery
from followup.rehearsal.faults.provider import ACCOUNT, TOKEN
from followup.rehearsal.faults.shop import BEGINS_AT, Shop, demo_address
from followup.rehearsal.faults.worker import AFTER_COMMIT, BEFORE_COMMIT, Order
from followup.storage import consents, inbox, outbox, shops
from followup.storage.store import Store, make_engine
from followup.transports.local_phone import signed_post

_AT_ONCE = 3
_MOST_COMMITS = 20
_BODIES = ("STOP", "thanks", "how much is it?", "Thursday at 9 works", "call me")
_NOBODY = demo_address(9)
_PAUSE = threading.Event()


@dataclass
class HooksVerdict:
    """What the kills showed; `lost` were acknowledged and are not there, `doubled` have more than one effect."""

    kills: int = 0
    posted: int = 0
    acknowledged: int = 0
    unacknowledged: int = 0
    kept_unacknowledged: int = 0
    lost: int = 0
    doubled: int = 0
    unanswered: int = 0
    refused: list[int] = field(default_factory=list)

    @property
    def is_clean(self) -> bool:
        """True where nothing was lost, doubled, left or refused."""
        return not (self.lost or self.doubled or self.unanswered or self.refused)


@dataclass(frozen=True)
class _Text:
    sid: str
    sender: str
    body: str


def kill_hooks(shop: Shop, nursery: Nursery, kills: int, seed: int, change: str | None = None) -> HooksVerdict:
    """Kill the pages so many times while texts come in; every process has ended when it returns.

    `change` as in an `Order`.
    """
    return _HooksTrial(shop, nursery, Random(f"hooks {seed}"), change).run(kills)


class _HooksTrial:
    def __init__(self, shop: Shop, nursery: Nursery, random: Random, change: str | None) -> None:
        self._shop, self._nursery, self._random, self._change = shop, nursery, random, change
        self._store = Store(make_engine(shop.url))
        with self._store.read() as connection:
            self._shop_id = shops.shop_codes(connection)[0][0]
            self._to = shops.load_shop(connection, self._shop_id).texts_from
            self._before = set(inbox.provider_ids(connection, self._shop_id))
        self._made: list[_Text] = []
        self._acknowledged: set[str] = set()
        self._open: list[_Text] = []
        self._kept_open: set[str] = set()
        self._verdict = HooksVerdict()

    def run(self, kills: int) -> HooksVerdict:
        """The verdict on all of it."""
        self._shop.set_clock(BEGINS_AT)
        try:
            for _ in range(kills):
                at = self._random.choice((BEFORE_COMMIT, AFTER_COMMIT))
                self._let_die(self._start(at, self._random.randint(1, _MOST_COMMITS)))
                self._look_for_lost()
            self._end()
        finally:
            self._store.close()
        return self._verdict

    def _start(self, at: str | None = None, nth: int = 1) -> int:
        log = str(self._shop.folder / "web.log")
        environment = self._shop.environment(_NOBODY)
        return self._nursery.start(Order(("web",), environment, log, at=at, nth=nth, change=self._change))

    def _let_die(self, pid: int) -> None:
        """Post until the process is gone: first what was not acknowledged, then something known, then new texts."""
        waiting = [*self._open, *self._known()]
        self._open, is_open = [], False
        with ThreadPoolExecutor(_AT_ONCE) as pool:
            while True:
                if any(ended.how == "killed" for ended in self._nursery.wait([pid], 0.003)):
                    self._open += waiting
                    self._verdict.kills += 1
                    return
                is_open = is_open or self._is_open()
                if not is_open:
                    continue
                batch = [waiting.pop(0) if waiting else self._new() for _ in range(_AT_ONCE)]
                list(pool.map(self._post, batch))

    def _end(self) -> None:
        """The last process lives; everything is posted once more, and the clock's tick answers what is left."""
        pid = self._start()
        while not self._is_open():
            _PAUSE.wait(0.005)
        self._open = []
        with ThreadPoolExecutor(_AT_ONCE) as pool:
            list(pool.map(self._post, self._made))
        os.kill(pid, signal.SIGKILL)
        self._nursery.wait([pid])
        log = str(self._shop.folder / "work.log")
        arguments = ("work", "--until", BEGINS_AT.isoformat())
        (ended,) = self._nursery.wait([self._nursery.start(Order(arguments, self._shop.environment(_NOBODY), log))])
        if (ended.how, ended.number) != ("exited", 0):
            raise RuntimeError("the clock's tick failed: see work.log")
        self._look_for_lost()
        self._count_effects()

    def _known(self) -> list[_Text]:
        known = [text for text in self._made if text.sid in self._acknowledged]
        return self._random.sample(known, min(2, len(known)))

    def _new(self) -> _Text:
        number = len(self._made)
        # One number writes several times, and says STOP once at most.
        sender = f"+1{312 + number // 100 % 4 * 100}555{100 + number % 100:04d}"
        body = _BODIES[number % len(_BODIES)] if number < 400 else "thanks"
        self._made.append(_Text(f"SM{number:032x}", sender, body))
        return self._made[-1]

    def _post(self, text: _Text) -> None:
        form = {"AccountSid": ACCOUNT, "MessageSid": text.sid, "From": text.sender, "To": self._to, "Body": text.body}
        url = f"{self._shop.environment(_NOBODY)['FOLLOWUP_PUBLIC_BASE_URL']}/hooks/texts"
        (signature,) = signed_post(url, form, TOKEN).values()
        headers = {"X-Twilio-Signature": signature, "Content-Type": "application/x-www-form-urlencoded"}
        self._verdict.posted += 1
        link = HTTPConnection("127.0.0.1", self._shop.port, timeout=15)
        try:
            link.request("POST", "/hooks/texts", urlencode(form), headers)
            status = link.getresponse().status
        except (OSError, HTTPException):
            self._verdict.unacknowledged += 1
            self._open.append(text)
            return
        finally:
            link.close()
        if status // 100 == 2:
            self._acknowledged.add(text.sid)
        else:
            self._verdict.refused.append(status)

    def _is_open(self) -> bool:
        link = HTTPConnection("127.0.0.1", self._shop.port, timeout=5)
        try:
            link.connect()
        except OSError:
            return False
        finally:
            link.close()
        return True

    def _stored(self) -> Counter[str]:
        with self._store.read() as connection:
            found = inbox.provider_ids(connection, self._shop_id)
        return Counter(one for one in found if one not in self._before)

    def _look_for_lost(self) -> None:
        stored = self._stored()
        self._verdict.acknowledged = len(self._acknowledged)
        self._verdict.lost += sum(sid not in stored for sid in self._acknowledged)
        self._kept_open |= {text.sid for text in self._open if text.sid in stored}
        self._verdict.kept_unacknowledged = len(self._kept_open)

    def _count_effects(self) -> None:
        """Each text is there once and was answered once: one line of the ledger for each stop, one answer at most."""
        stored, made = self._stored(), {text.sid for text in self._made}
        self._verdict.lost += len(made - set(stored))
        self._verdict.doubled += sum(count - 1 for count in stored.values())
        stopped = {text.sender for text in self._made if text.body == "STOP"}
        with self._store.read() as connection:
            self._verdict.unanswered = len(inbox.unhandled(connection, self._shop_id))
            lines = [line for number in stopped for line in consents.ledger(connection, self._shop_id, number)]
            texts = outbox.texts_of_shop(connection, self._shop_id)
        taken_back = Counter(line.number for line in lines if line.event == "taken_back")
        self._verdict.lost += sum(number not in taken_back for number in stopped)
        confirmed = Counter(row["number"] for row in texts if row["reason"] == "stopped")
        for counted in (taken_back, confirmed):
            self._verdict.doubled += sum(count - 1 for count in counted.values())
