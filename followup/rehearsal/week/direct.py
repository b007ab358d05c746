"""A provider that is asked by calls, and hooks that are the workflows behind them: HTTP on both sides is left out.

Nothing is left out that the program decides, keeps or sends; what is left out is the wire, which is most of the time
that a text takes where customers live for years. What goes wrong goes wrong on the wire, so every call that will is
made over HTTP; so is one in so many of those at which the wire would show nothing (`Wire`).
"""

from __future__ import annotations

import threading
from dataclasses import dataclass, field
from datetime import datetime
from typing import cast

from followup.rehearsal.faults.provider import ACCOUNT, TOKEN, Provider
from followup.transports.transport import Fields, InboundText, OutgoingText, SentReceipt
from followup.transports.twilio import Twilio
from followup.wiring import House

_TAKEN, _UNUSABLE = 204, 400


@dataclass
class Wire:
    """Which calls go over HTTP: one in `one_in` of each kind (1: all of them, 0: none)."""

    one_in: int = 1
    _seen: dict[str, int] = field(default_factory=dict)
    _lock: threading.Lock = field(default_factory=threading.Lock)

    def has_its_turn(self, kind: str) -> bool:
        """Whether the next call of that kind goes over it."""
        with self._lock:
            seen = self._seen[kind] = self._seen.get(kind, 0) + 1
        return bool(self.one_in) and seen % self.one_in == 0


class DirectProvider(Twilio):
    """The provider's transport whose requests are calls; forms of hooks are read as ever."""

    def __init__(self, provider: Provider, wire: Wire) -> None:
        super().__init__(ACCOUNT, [TOKEN], provider.address)
        self._provider, self._wire = provider, wire

    def send(self, text: OutgoingText) -> SentReceipt:
        """Hand the text over."""
        if self._wire.has_its_turn("send") or not self._provider.answers_next(text.to):
            return super().send(text)
        post = self._provider.take({
            "To": text.to, "From": text.sender, "Body": text.body, "StatusCallback": text.status_callback_url,
            "ValidityPeriod": str(text.valid_seconds),
        })  # fmt: skip
        self._provider.when_taken(len(self._provider.posts))
        self._provider.report_early(post)
        assert post.sid is not None, "what is answered as it should be is taken"
        return SentReceipt(post.sid, "queued")

    def list_inbound(self, number: str, since: datetime) -> list[InboundText]:
        """What customers wrote to that number since then."""
        if self._wire.has_its_turn("list") or not self._provider.lists_next():
            return super().list_inbound(number, since)
        self._provider.list_fails()
        # The wire tells whole seconds.
        return [
            InboundText(one.sid, one.sender, one.to, one.body, received_at=one.at.replace(microsecond=0))
            for one in self._provider.heard(number, since=since.date().isoformat())
            if one.at.replace(microsecond=0) >= since
        ]


def post_directly(house: House, path: str, form: dict[str, str]) -> int:
    """What a hook does with a form that was posted to that path, as the status of its answer."""
    *_, which, attempt = path.split("/")
    fields = cast(Fields, form)
    is_text = path.endswith("/hooks/texts")
    is_kept = house.receive_text(fields) if is_text else house.receive_status(which, int(attempt), fields)
    return _TAKEN if is_kept else _UNUSABLE
