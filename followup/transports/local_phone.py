"""The test phone, built in: texts stay on this machine and are read and answered on a page of the program.

Its answers are posted to the same hook as a provider's, signed by the same scheme (HMAC-SHA1 over the address and the
sorted fields, base64) with a token of its own, so that a demonstration walks the whole way.
"""

from __future__ import annotations

import base64
import hashlib
import hmac
import secrets
from collections.abc import Callable
from datetime import datetime

from followup.transports.transport import (
    Fields,
    Found,
    Headers,
    InboundText,
    OutcomeUnknown,
    OutgoingText,
    SentReceipt,
    StatusReport,
    body_of,
    one_number,
    one_value,
)

SIGNATURE_HEADER = "X-Followup-Signature"
_ID = "TP[0-9a-f]{32}"

Deliver = Callable[[OutgoingText, str], None]
"""Keeps a text under its id (`TP...`) where the phone's page finds it; the same id twice is kept once."""
LookUp = Callable[[str, datetime], list[Found]]
Written = Callable[[datetime], list[InboundText]]


def token_from(secret_key: str) -> str:
    """The test phone's signing token, so that every process of one machine has the same without another setting."""
    return hmac.new(secret_key.encode(), b"followup test phone", hashlib.sha256).hexdigest()


def sign(url: str, fields: Fields, token: str) -> str:
    """The signature of a posted form: HMAC-SHA1, base64, of the address and every name and value in sorted order."""
    signed = url
    for name in sorted(set(fields)):
        for value in sorted(set(fields.getlist(name))):
            signed += name + value
    digest = hmac.new(token.encode(), signed.encode(), hashlib.sha1).digest()
    return base64.b64encode(digest).decode()


def signed_post(url: str, fields: Fields | dict[str, str], token: str) -> dict[str, str]:
    """The headers with which the test phone posts these fields to a hook."""
    form = fields if isinstance(fields, Fields) else _Single(fields)
    return {SIGNATURE_HEADER: sign(url, form, token)}


def inbound_fields(sender: str, to: str, body: str) -> dict[str, str]:
    """What the test phone posts when a customer writes `body`; each call is a new text."""
    return {"id": f"TP{secrets.token_hex(16)}", "from": sender, "to": to, "body": body}


def status_fields(provider_id: str, status: str) -> dict[str, str]:
    """What the test phone posts when a text was shown."""
    return {"id": provider_id, "status": status}


class _Single(dict[str, str]):
    """Fields that come once each."""

    def getlist(self, key: str, /) -> list[str]:
        return [self[key]] if key in self else []


class LocalPhone:
    """The transport of the test phone; where texts are kept is given by wiring."""

    name = "test_phone"
    address: str | None = None

    def __init__(
        self, token: str, deliver: Deliver, look_up: LookUp | None = None, written: Written | None = None
    ) -> None:
        """`look_up(to, since)` lists what was delivered, `written(since)` what was answered."""
        self._token = token
        self._deliver = deliver
        self._look_up = look_up
        self._written = written

    def send(self, text: OutgoingText) -> SentReceipt:
        """Delivers at once. The id follows from the attempt, so that one attempt cannot show up twice."""
        seed = f"{text.public_id}/{text.attempt}".encode()
        provider_id = f"TP{hashlib.sha256(seed).hexdigest()[:32]}"
        try:
            self._deliver(text, provider_id)
        except Exception as error:
            # The store may have kept the text and failed afterwards.
            raise OutcomeUnknown(OutcomeUnknown.__doc__) from error
        return SentReceipt(provider_id, "sent")

    def find_sent(self, to: str, sender: str, body: str, since: datetime) -> list[Found]:
        """See Transport."""
        found = self._look_up(to, since) if self._look_up else []
        alike = [text for text in found if text.sender == sender and text.body == body and text.created_at >= since]
        return sorted(alike, key=lambda text: text.created_at)

    def list_inbound(self, to: str, since: datetime) -> list[InboundText]:
        """See Transport."""
        written = self._written(since) if self._written else []
        return [text for text in written if text.to == to]

    def is_genuine(self, url: str, fields: Fields | str, headers: Headers) -> bool:
        """See Transport; the test phone posts forms only."""
        given = headers.get(SIGNATURE_HEADER)
        if given is None or isinstance(fields, str):
            return False
        try:
            return hmac.compare_digest(sign(url, fields, self._token).encode(), given.encode())
        except UnicodeEncodeError:
            return False

    def read_inbound(self, fields: Fields) -> InboundText:
        """See Transport."""
        return InboundText(
            provider_id=one_value(fields, "id", _ID),
            sender=one_number(fields, "from"),
            to=one_number(fields, "to"),
            body=body_of(fields, "body"),
        )

    def read_status(self, fields: Fields) -> StatusReport:
        """See Transport."""
        return StatusReport(
            provider_id=one_value(fields, "id", _ID), status=one_value(fields, "status", "[a-z_]{1,32}")
        )
