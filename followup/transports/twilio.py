"""Sends texts through Twilio, reads its hooks, and says in the program's own words what went wrong.

Its client has no time limit and no key against sending twice, and the class of an exception does not tell whether a
text was taken. So every request passes `_Http`, which makes exactly one, with a limit, and classifies by phase: could
not connect, or a refusal in the four hundreds, is proven; everything after the first byte is unknown.
"""

from __future__ import annotations

import json
import logging
import threading
from base64 import b64encode
from collections.abc import Sequence
from datetime import datetime, timedelta
from functools import partial
from typing import Any
from urllib.parse import urlencode

# The package ships no types.
from twilio.request_validator import (  # type: ignore[import-untyped]
    HMAC_SHA256,
    SIGNATURE_HEADER,
    SIGNATURE_SETTINGS_HEADER,
    RequestValidator,
    get_signature_algorithm,
)

from followup.clock import is_loopback
from followup.transports.transport import (
    AccountRefused,
    BadNumber,
    BadText,
    Fields,
    Filtered,
    ForeignHook,
    Found,
    Headers,
    InboundText,
    LookUpFailed,
    NotAccepted,
    NotRegistered,
    OptedOut,
    OutcomeUnknown,
    OutgoingText,
    ProvenRefused,
    RateLimited,
    RegionClosed,
    SentReceipt,
    StatusReport,
    Unreachable,
    body_of,
    one_number,
    one_value,
)

ADDRESS = "https://api.twilio.com"
CONNECT_SECONDS = 5.0
# Late accepts of up to 26 s were reported by users of the provider.
READ_SECONDS = 30.0
# Their clock and ours may differ by this much when a text is looked up.
CLOCKS_DIFFER_BY = timedelta(seconds=30)
LISTED_AT_ONCE = 1000
_MESSAGE_SID = "(SM|MM)[0-9a-f]{32}"

# The provider's published error codes, by what they mean for a text.
CODES: dict[type[ProvenRefused], tuple[int, ...]] = {
    OptedOut: (21610,),
    BadNumber: (21211, 21604, 21614, 30005, 30006),
    RegionClosed: (21408,),
    Unreachable: (21612, 30003, 30008, 30410),
    Filtered: (30004, 30007),
    BadText: (21602, 21617, 30010),
    RateLimited: (14107, 20429, 21611, 30001, 30022, 30023, 63038),
    NotRegistered: (30024, 30032, 30034, 30035),
    AccountRefused: (20003, 20404, 21212, 21606, 30002),
}
_CLASS_OF_CODE = {code: refusal for refusal, codes in CODES.items() for code in codes}

# TLS faults that can only happen before the first byte of a request; any other may come while the answer is read.
_HANDSHAKE_FAULTS = frozenset(
    {
        "CERTIFICATE_VERIFY_FAILED",
        "HTTP_REQUEST",
        "NO_PROTOCOLS_AVAILABLE",
        "SSLV3_ALERT_HANDSHAKE_FAILURE",
        "TLSV1_ALERT_PROTOCOL_VERSION",
        "UNSUPPORTED_PROTOCOL",
        "WRONG_VERSION_NUMBER",
    }
)

_log = logging.getLogger(__name__)


def refusal_of(code: int | None) -> type[ProvenRefused]:
    """What an error code means; ProvenRefused itself where the code is not known here."""
    return _CLASS_OF_CODE.get(code or 0, ProvenRefused)


class Twilio:
    """The transport of one account."""

    name = "twilio"

    def __init__(
        self,
        account_sid: str,
        auth_tokens: Sequence[str],
        address: str = ADDRESS,
        connect_seconds: float | None = None,
        read_seconds: float | None = None,
        shared_keys: Sequence[str] = (),
    ) -> None:
        """The first token signs our requests; hooks may be signed by any of them, or by the newer scheme with any of
        the shared keys, so that both can be changed."""
        self.address: str | None = address
        # Read when called, so that a trial need not wait for half a minute.
        seconds = (connect_seconds or CONNECT_SECONDS, read_seconds or READ_SECONDS)
        self._account_sid = account_sid
        self._by_token = [RequestValidator(token) for token in auth_tokens]
        self._by_shared_key = [RequestValidator(key) for key in shared_keys]
        # Made when it is first asked for: the pages check signatures and send nothing, and it takes its time to import.
        self._client_of = partial(_messages, account_sid, auth_tokens[0], address, seconds)
        self._client: Any = None
        self._making = threading.Lock()

    @property
    def _messages(self) -> Any:
        if self._client is None:
            with self._making:
                self._client = self._client or self._client_of()
        return self._client

    def send(self, text: OutgoingText) -> SentReceipt:
        """See Transport. One POST, whatever comes back."""
        try:
            message = self._messages.create(
                to=text.to,
                from_=text.sender,
                body=text.body,
                status_callback=text.status_callback_url,
                validity_period=text.valid_seconds,
            )
            return SentReceipt(str(message.sid), str(message.status or "accepted"))
        except (ProvenRefused, OutcomeUnknown):
            raise
        except Exception as error:
            # Whatever the client stumbled over, the request may have been taken. The cause may quote the text, so only
            # its name goes on.
            raise OutcomeUnknown(f"{OutcomeUnknown.__doc__} ({type(error).__name__})") from None

    def find_sent(self, to: str, sender: str, body: str, since: datetime) -> list[Found]:
        """See Transport. The list may lag behind by minutes, at times hours."""
        # Not filtered by the day of sending: a queued text has none yet.
        found = [
            Found(str(one.sid), one.to, one.from_, one.body or "", one.date_created, str(one.status))
            for one in self._listed(to=to, from_=sender)
            if one.date_created and one.date_created >= since - CLOCKS_DIFFER_BY
        ]
        return sorted((text for text in found if text.body == body), key=lambda text: text.created_at)

    def list_inbound(self, to: str, since: datetime) -> list[InboundText]:
        """See Transport. The provider filters by whole days, so the rest is filtered here."""
        midnight = since.replace(hour=0, minute=0, second=0, microsecond=0)
        texts = [
            InboundText(
                provider_id=str(one.sid),
                sender=str(one.from_),
                to=str(one.to),
                body=(one.body or "").replace("\x00", "\ufffd"),
                media_count=int(one.num_media) if str(one.num_media).isdecimal() else 0,
                received_at=one.date_created,
            )
            for one in self._listed(to=to, date_sent_after=midnight)
            if one.direction == "inbound" and one.date_created and one.date_created >= since
        ]
        return sorted(texts, key=lambda text: text.received_at or since)

    def is_genuine(self, url: str, fields: Fields | str, headers: Headers) -> bool:
        """See Transport."""
        scheme, validators = None, self._by_token
        if named := headers.get(SIGNATURE_SETTINGS_HEADER):
            # What a request says of its own scheme counts only as far as we have a key for it.
            scheme, validators = get_signature_algorithm(named), self._by_shared_key
            if scheme != HMAC_SHA256 or not validators:
                _log.warning("a hook was signed by a scheme or shared key that the settings do not name: refused")
                return False
        # Its comparison crashes on a missing signature.
        given = headers.get(SIGNATURE_HEADER) or ""
        try:
            return any(validator.validate(url, fields, given, scheme) for validator in validators)
        except (TypeError, ValueError):
            # A body that is no form without its hash in the address, or half a character.
            return False

    def read_inbound(self, fields: Fields) -> InboundText:
        """See Transport."""
        media = fields.getlist("NumMedia")
        caught = (fields.getlist("OptOutType") or [""])[0].lower()
        text = InboundText(
            provider_id=one_value(fields, "MessageSid", _MESSAGE_SID),
            sender=one_number(fields, "From"),
            to=one_number(fields, "To"),
            body=body_of(fields, "Body"),
            media_count=int(one_value(fields, "NumMedia", "[0-9]{1,3}")) if media else 0,
            provider_caught=caught if caught in ("stop", "start", "help") else None,
        )
        self._check_account(fields, text)
        return text

    def read_status(self, fields: Fields) -> StatusReport:
        """See Transport. A status that is not known is kept as it is."""
        code = int(one_value(fields, "ErrorCode", "[0-9]{1,9}")) if any(fields.getlist("ErrorCode")) else None
        report = StatusReport(
            provider_id=one_value(fields, "MessageSid", _MESSAGE_SID),
            status=one_value(fields, "MessageStatus", "[a-z_-]{1,32}"),
            code=code,
            problem=refusal_of(code) if code else None,
        )
        self._check_account(fields, report)
        return report

    def _check_account(self, fields: Fields, about: InboundText | StatusReport) -> None:
        if one_value(fields, "AccountSid", "AC[0-9a-fA-F]{32}") != self._account_sid:
            raise ForeignHook(about)

    def _listed(self, **filters: Any) -> list[Any]:
        try:
            found: list[Any] = self._messages.list(page_size=LISTED_AT_ONCE, **filters)
            return found
        except Exception as error:
            # The address of the request holds a number, so only the name of the fault goes on.
            raise LookUpFailed(f"{LookUpFailed.__doc__} ({type(error).__name__})") from None


def _messages(account_sid: str, token: str, address: str, seconds: tuple[float, float]) -> Any:
    """The client's list of messages; imported here because it takes more than 100 ms."""
    from twilio.rest import Client  # type: ignore[import-untyped]  # the package ships no types

    client = Client(account_sid, token, http_client=_Http(address, seconds))
    client.api.base_url = address
    return client.messages


class _Http:
    """The client's way to the network: one request, a time limit, and outcomes by phase."""

    is_async = False

    def __init__(self, address: str, seconds: tuple[float, float]) -> None:
        from twilio.http.http_client import TwilioHttpClient  # type: ignore[import-untyped]  # ships no types

        # The client's log would hold numbers.
        silent = logging.getLogger(f"{__name__}.http")
        silent.disabled = True
        self._client = TwilioHttpClient(logger=silent)
        # Its constructor compares the limit with a number; the one for connecting needs a pair.
        self._client.timeout = seconds
        # A proxy of the environment is for real addresses.
        self._client.session.trust_env = not is_loopback(address)
        self._adapter = _adapter_of(address)
        for scheme in ("https://", "http://"):
            self._client.session.mount(scheme, self._adapter)
        # Proxies and certificates of the environment, which are otherwise looked for with every request.
        self._way = {**self._client.session.merge_environment_settings(address, {}, False, None, None)}
        self._way["timeout"] = seconds

    def request(self, method: str, url: str, **details: Any) -> Any:
        """The provider's answer; for a POST raises ProvenRefused or OutcomeUnknown instead where it took no text."""
        is_form = method == "POST" and details.get("data") and not details.get("params")
        try:
            if is_form:
                response = self._post(url, details["data"], details["headers"], details["auth"])
            else:
                response = self._client.request(method, url, **details)
        except Exception as error:
            name = type(error).__name__
            if _never_left(error):
                raise NotAccepted(words=f"{NotAccepted.__doc__} ({name})") from None
            raise OutcomeUnknown(f"{OutcomeUnknown.__doc__} ({name})") from None
        if method == "POST":
            _check_taken(response)
        return response

    def _post(self, url: str, form: dict[str, str], headers: dict[str, str], auth: tuple[str, str]) -> Any:
        """Post a form as the client does, without what it asks each time of forms of any kind, cookies, hooks and
        redirects: that takes twice as long as all the rest of a call."""
        from requests import PreparedRequest
        from requests.structures import CaseInsensitiveDict
        from twilio.http.response import Response  # type: ignore[import-untyped]  # ships no types

        post = PreparedRequest()
        post.method, post.url, post.body = "POST", url, urlencode(form, doseq=True)
        proof = b64encode(":".join(auth).encode()).decode("ascii")
        own = {"Authorization": f"Basic {proof}", "Content-Length": str(len(post.body))}
        post.headers = CaseInsensitiveDict({**headers, **own})
        response = self._adapter.send(post, **self._way)
        return Response(response.status_code, response.text, response.headers)


def _adapter_of(address: str) -> Any:
    """The session's way to one address: which pool of connections a request takes, and which certificates that one
    trusts, is found once and not with every request."""
    from requests.adapters import HTTPAdapter

    class OneAddress(HTTPAdapter):
        pool: Any = None
        verified: Any = None

        def get_connection_with_tls_context(self, request: Any, *how: Any, **others: Any) -> Any:
            if not request.url.startswith(f"{address}/"):
                return super().get_connection_with_tls_context(request, *how, **others)
            if self.pool is None:
                self.pool = super().get_connection_with_tls_context(request, *how, **others)
            return self.pool

        def cert_verify(self, conn: Any, *how: Any) -> None:
            if conn is not self.verified:
                super().cert_verify(conn, *how)  # type: ignore[no-untyped-call]  # the library's own types end here
                self.verified = conn

    return OneAddress(pool_maxsize=32, max_retries=0)


def _never_left(error: Exception) -> bool:
    """Whether this fault proves that no byte of the request was sent."""
    import requests
    from urllib3.exceptions import ConnectTimeoutError

    if isinstance(error, requests.ConnectTimeout):
        return True
    if not isinstance(error, requests.ConnectionError):
        return False
    reason = getattr(error.args[0], "reason", None) if error.args else None
    # A proxy that could not be reached wraps the fault once more.
    reason = getattr(reason, "original_error", reason)
    if isinstance(error, requests.exceptions.SSLError):
        fault = reason.args[0] if isinstance(reason, Exception) and reason.args else None
        return getattr(fault, "reason", None) in _HANDSHAKE_FAULTS
    # Name resolution and a refused connection are kinds of it.
    return isinstance(reason, ConnectTimeoutError)


def _check_taken(response: Any) -> None:
    status = int(response.status_code)
    answer = _json_object(response.text)
    if 200 <= status < 300:
        if not isinstance(answer.get("sid"), str) or not answer["sid"]:
            raise OutcomeUnknown(f"{OutcomeUnknown.__doc__} (the answer {status} names no text)")
    elif 400 <= status < 500 and status != 408:
        # 408 alone among them may come from a gateway that waited for the provider.
        raise _refusal(status, answer.get("code"), response.headers.get("Retry-After"))
    else:
        raise OutcomeUnknown(f"{OutcomeUnknown.__doc__} (the answer was {status})")


def _refusal(status: int, given_code: object, retry_after: str | None) -> ProvenRefused:
    code = given_code if isinstance(given_code, int) else None
    kind = RateLimited if status == 429 else refusal_of(code)
    if kind is ProvenRefused and status in (401, 403):
        kind = AccountRefused
    seconds = int(retry_after) if retry_after and retry_after.isascii() and retry_after.isdigit() else None
    return kind(code or status, retry_after_seconds=seconds)


def _json_object(text: str) -> dict[str, Any]:
    try:
        value = json.loads(text)
    except ValueError:
        return {}
    return value if isinstance(value, dict) else {}
