"""A simulated shop without pages and network: hooks become the workflows behind them, the provider is asked directly.

Nothing is left out that the program decides, keeps or sends; what is left out is HTTP on both sides, which is most of
the time that a text takes where thousands of customers live for years. Faults of the network need the network.
"""

from __future__ import annotations

from datetime import datetime
from typing import cast

from followup.rehearsal.faults.provider import ACCOUNT, TOKEN, Provider
from followup.transports.transport import Fields, InboundText, OutgoingText, SentReceipt
from followup.transports.twilio import Twilio
from followup.wiring import House

_TAKEN, _UNUSABLE = 204, 400


class DirectProvider(Twilio):
    """The provider's transport whose requests are calls; forms of hooks are read as ever."""

    def __init__(self, provider: Provider) -> None:
        super().__init__(ACCOUNT, [TOKEN], provider.address)
        self._provider = provider

    def send(self, text: OutgoingText) -> SentReceipt:
        """Hand the text over."""
        post = self._provider.take({
            "To": text.to, "From": text.sender, "Body": text.body, "StatusCallback": text.status_callback_url,
            "ValidityPeriod": str(text.valid_seconds),
        })  # fmt: skip
        self._provider.when_taken(len(self._provider.posts))
        self._provider.report_early(post)
        assert post.sid is not None, "without faults every text is taken"
        return SentReceipt(post.sid, "queued")

    def list_inbound(self, number: str, since: datetime) -> list[InboundText]:
        """What customers wrote to that number since then."""
        return [
            InboundText(one.sid, one.sender, one.to, one.body, received_at=one.at)
            for one in self._provider.heard(number, since=since.date().isoformat())
            if one.at >= since
        ]


def post_directly(house: House, path: str, form: dict[str, str]) -> int:
    """What a hook does with a form that was posted to that path, as the status of its answer."""
    *_, which, attempt = path.split("/")
    fields = cast(Fields, form)
    is_text = path.endswith("/hooks/texts")
    is_kept = house.receive_text(fields) if is_text else house.receive_status(which, int(attempt), fields)
    return _TAKEN if is_kept else _UNUSABLE
