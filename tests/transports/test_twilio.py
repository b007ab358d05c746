"""What the provider answers, and what it is called here: exactly one POST each, whatever comes back."""

import logging
import socket
import ssl
import threading
import time
import traceback
from collections.abc import Callable
from datetime import UTC, datetime
from typing import Any

import pytest
import requests
import responses
from responses import matchers
from urllib3 import exceptions
from werkzeug.datastructures import MultiDict

from followup.transports import transport as words
from followup.transports.transport import (
    AccountRefused,
    BadNumber,
    BadText,
    Filtered,
    ForeignHook,
    LookUpFailed,
    NotAccepted,
    NotRegistered,
    OptedOut,
    OutcomeUnknown,
    OutgoingText,
    ProvenRefused,
    RateLimited,
    RegionClosed,
    Unreachable,
    UnusableHook,
)
from followup.transports.twilio import CODES, Twilio, refusal_of
from tests.transports.loopback import Loopback, answer_with, close, reset

ACCOUNT = "AC" + "0" * 32
MESSAGES = f"https://api.twilio.com/2010-04-01/Accounts/{ACCOUNT}/Messages.json"
SHOP, CUSTOMER = "+13125550100", "+13125550147"
SID = "SM" + "1" * 32
TEXT = OutgoingText(CUSTOMER, SHOP, "a body nobody may log", "https://shop.example/hooks/status/abc/2", 600, "abc", 2)
SINCE = datetime(2026, 11, 2, 15, 0, tzinfo=UTC)


@pytest.fixture
def provider() -> Twilio:
    return Twilio(ACCOUNT, ["the token"], SHOP)


def near(address: str, read_seconds: float = 5.0) -> Twilio:
    return Twilio(ACCOUNT, ["the token"], SHOP, address, connect_seconds=2.0, read_seconds=read_seconds)


@responses.activate
def test_a_text_is_posted_as_the_provider_documents(provider: Twilio) -> None:
    # Parameters: the provider's public documents of its Messages resource.
    form = {
        "To": CUSTOMER,
        "From": SHOP,
        "Body": TEXT.body,
        "StatusCallback": TEXT.status_callback_url,
        "ValidityPeriod": "600",
    }
    answer = {"sid": SID, "status": "queued"}
    posted = responses.post(MESSAGES, json=answer, status=201, match=[matchers.urlencoded_params_matcher(form)])
    receipt = provider.send(TEXT)
    assert (receipt.provider_id, receipt.status) == (SID, "queued")
    assert posted.call_count == 1
    assert str(posted.calls[0].request.headers["Authorization"]).startswith("Basic ")
    assert posted.calls[0].request.req_kwargs["timeout"] == (5.0, 30.0)


REFUSED: list[tuple[int, dict[str, Any], type[ProvenRefused]]] = [
    (400, {"code": 21610}, OptedOut),
    (400, {"code": 21211}, BadNumber),
    (400, {"code": 21614}, BadNumber),
    (400, {"code": 21408}, RegionClosed),
    (400, {"code": 21612}, Unreachable),
    (400, {"code": 21617}, BadText),
    (400, {"code": 21606}, AccountRefused),
    (400, {"code": 30034}, NotRegistered),
    (400, {"code": 30007}, Filtered),
    (429, {"code": 20429}, RateLimited),
    (429, {}, RateLimited),
    (429, {"code": 21611}, RateLimited),
    (401, {"code": 20003}, AccountRefused),
    (401, {}, AccountRefused),
    (403, {}, AccountRefused),
    (404, {"code": 20404}, AccountRefused),
    (400, {"code": 99999}, ProvenRefused),
    (400, {"code": "21610"}, ProvenRefused),
    (400, {}, ProvenRefused),
]


@pytest.mark.parametrize(("status", "body", "refusal"), REFUSED)
@responses.activate
def test_a_refusal_in_the_four_hundreds_is_proven(
    provider: Twilio, status: int, body: dict[str, Any], refusal: type[ProvenRefused]
) -> None:
    posted = responses.post(MESSAGES, json=body, status=status)
    with pytest.raises(ProvenRefused) as caught:
        provider.send(TEXT)
    assert type(caught.value) is refusal
    assert posted.call_count == 1
    assert caught.value.code == (body["code"] if isinstance(body.get("code"), int) else status)


@responses.activate
def test_a_newer_form_of_refusal_is_read_too(provider: Twilio) -> None:
    # RFC 9457, as the provider's client knows it; its `status` is not believed over the real one.
    problem = {"type": "about:blank", "title": "no", "status": 500, "code": 21610}
    responses.post(MESSAGES, json=problem, status=400)
    with pytest.raises(OptedOut):
        provider.send(TEXT)


@pytest.mark.parametrize(("given", "seconds"), [("7", 7), ("soon", None), ("-1", None), ("²", None)])
@responses.activate
def test_how_long_to_wait_is_passed_on(provider: Twilio, given: str, seconds: int | None) -> None:
    responses.post(MESSAGES, json={"code": 20429}, status=429, headers={"Retry-After": given})
    with pytest.raises(RateLimited) as caught:
        provider.send(TEXT)
    assert caught.value.retry_after_seconds == seconds
    assert not caught.value.counts_as_attempt


@pytest.mark.parametrize(
    ("status", "body"),
    [
        (500, '{"code": 20500}'),
        (500, '{"code": 21610}'),
        (502, "<html>bad gateway</html>"),
        (503, '{"code": 20503}'),
        (504, ""),
        (408, ""),
        (307, ""),
        (201, "<html>welcome</html>"),
        (201, ""),
        (201, "{}"),
        (201, '{"sid": null}'),
        (201, '{"sid": ""}'),
        (201, '{"sid": 5}'),
        (201, "[]"),
        (201, '"queued"'),
        (201, '{"sid": "SM1'),
        (201, '{"sid": "SM1", "date_created": 5}'),
    ],
)
@responses.activate
def test_any_other_answer_leaves_it_unknown(provider: Twilio, status: int, body: str) -> None:
    # The provider's page on 20500: a 500 may have been sent, "it is possible to receive multiple messages" on retry.
    posted = responses.post(MESSAGES, body=body, status=status, headers={"Location": MESSAGES})
    with pytest.raises(OutcomeUnknown):
        provider.send(TEXT)
    assert posted.call_count == 1


CONNECTING: list[Callable[[], Exception]] = [
    lambda: requests.ConnectTimeout(),
    lambda: requests.ConnectionError(_retries(exceptions.NewConnectionError(None, "refused"))),
    lambda: requests.ConnectionError(_retries(exceptions.NameResolutionError("host", None, socket.gaierror()))),
    lambda: requests.exceptions.ProxyError(
        _retries(exceptions.ProxyError("no proxy", exceptions.NewConnectionError(None, "refused")))
    ),
    lambda: requests.exceptions.SSLError(_retries(exceptions.SSLError(_handshake("CERTIFICATE_VERIFY_FAILED")))),
]
AFTER: list[Callable[[], Exception]] = [
    lambda: requests.ReadTimeout(),
    lambda: requests.ConnectionError(),
    lambda: requests.ConnectionError(exceptions.ProtocolError("aborted", ConnectionResetError())),
    lambda: requests.exceptions.ChunkedEncodingError(),
    lambda: requests.exceptions.SSLError(_retries(exceptions.SSLError("unexpected end"))),
    lambda: requests.exceptions.SSLError(_retries(exceptions.SSLError(_handshake("UNEXPECTED_EOF_WHILE_READING")))),
    lambda: requests.exceptions.SSLError(),
    lambda: requests.exceptions.ProxyError(_retries(exceptions.ProxyError("tunnel", OSError("503")))),
    lambda: requests.exceptions.ContentDecodingError(),
    lambda: RuntimeError("a fault nobody foresaw"),
]


def _handshake(reason: str) -> ssl.SSLError:
    fault = ssl.SSLError(1, reason)
    fault.reason = reason
    return fault


def _retries(reason: Exception) -> exceptions.MaxRetryError:
    return exceptions.MaxRetryError(None, MESSAGES, reason)


@pytest.mark.parametrize("fault", CONNECTING)
@responses.activate
def test_what_could_not_connect_did_not_leave(provider: Twilio, fault: Callable[[], Exception]) -> None:
    posted = responses.post(MESSAGES, body=fault())
    with pytest.raises(NotAccepted) as caught:
        provider.send(TEXT)
    assert posted.call_count == 1
    assert not caught.value.is_permanent


@pytest.mark.parametrize("fault", AFTER)
@responses.activate
def test_what_broke_later_is_unknown(provider: Twilio, fault: Callable[[], Exception]) -> None:
    posted = responses.post(MESSAGES, body=fault())
    with pytest.raises(OutcomeUnknown):
        provider.send(TEXT)
    assert posted.call_count == 1


BROKEN = {
    "reset": reset,
    "closed": close,
    "half an answer": answer_with("201 Created", b'{"sid": "SM', length=500),
    "half a word": lambda connection, _: connection.sendall(b"HTTP/1.1 2"),
    "no HTTP": lambda connection, _: connection.sendall(b"hello\r\n\r\n"),
    "500": answer_with("500 Internal Server Error", b'{"code": 20500}'),
    "503": answer_with("503 Service Unavailable", b""),
    "HTML": answer_with("201 Created", b"<html>", "text/html"),
    "no sid": answer_with("201 Created", b'{"status": "queued"}'),
    "redirect": answer_with("307 Temporary Redirect\r\nLocation: /elsewhere", b""),
}


@pytest.mark.parametrize("name", BROKEN)
def test_a_provider_that_took_the_text_and_broke_off(name: str) -> None:
    with Loopback(BROKEN[name]) as broken:
        with pytest.raises(OutcomeUnknown):
            near(broken.address).send(TEXT)
        assert broken.posts == len(broken.requests) == 1


def test_a_provider_that_took_the_text_and_says_nothing() -> None:
    silent = Loopback(lambda connection, request: silent.wait(connection, request))
    with silent:
        began = time.monotonic()
        with pytest.raises(OutcomeUnknown):
            near(silent.address, read_seconds=0.3).send(TEXT)
        assert time.monotonic() - began < 3
        assert silent.posts == 1


def test_a_connection_that_was_kept_open_and_dropped_is_opened_anew() -> None:
    # Each answer closes its connection; the pool must notice, not report an unknown text.
    with Loopback(answer_with("201 Created", b'{"sid": "SM1", "status": "queued"}')) as server:
        provider = near(server.address)
        assert [provider.send(TEXT).provider_id for _ in range(3)] == ["SM1"] * 3
        assert server.posts == 3


def test_a_proxy_of_the_environment_is_not_asked_for_what_stays_on_this_machine(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    for variable in ("http_proxy", "HTTP_PROXY", "all_proxy", "ALL_PROXY"):
        monkeypatch.setenv(variable, "http://127.0.0.1:9")
    monkeypatch.delenv("no_proxy", raising=False)
    monkeypatch.delenv("NO_PROXY", raising=False)
    with Loopback(answer_with("201 Created", b'{"sid": "SM1", "status": "queued"}')) as server:
        assert near(server.address).send(TEXT).provider_id == "SM1"


def test_nobody_listens() -> None:
    with socket.create_server(("127.0.0.1", 0)) as taken:
        port = taken.getsockname()[1]
    with pytest.raises(NotAccepted):
        near(f"http://127.0.0.1:{port}").send(TEXT)


def test_a_server_that_speaks_no_tls() -> None:
    def speak_plainly(listener: socket.socket) -> None:
        connection, _ = listener.accept()
        with connection:
            connection.recv(4096)
            connection.sendall(b"HTTP/1.1 400 Bad Request\r\n\r\n")

    with socket.create_server(("127.0.0.1", 0)) as listener:
        thread = threading.Thread(target=speak_plainly, args=(listener,), daemon=True)
        thread.start()
        with pytest.raises(NotAccepted):
            near(f"https://127.0.0.1:{listener.getsockname()[1]}").send(TEXT)
        thread.join(timeout=5)


def test_faults_and_logs_name_no_number_and_no_text(caplog: pytest.LogCaptureFixture) -> None:
    caplog.set_level(logging.INFO)
    with Loopback(reset) as broken:
        with pytest.raises(OutcomeUnknown) as unknown:
            near(broken.address).send(TEXT)
        with pytest.raises(LookUpFailed) as failed:
            near(broken.address).find_sent(CUSTOMER, SHOP, TEXT.body, SINCE)
    quoting = f'{{"message": "no such number: {CUSTOMER}"}}'.encode()
    with Loopback(answer_with("500 Internal Server Error", quoting)) as broken, pytest.raises(LookUpFailed) as quoted:
        near(broken.address).find_sent(CUSTOMER, SHOP, TEXT.body, SINCE)
    for caught in (unknown, failed, quoted):
        said = "".join(traceback.format_exception(caught.value))
        assert CUSTOMER.lstrip("+") not in said and TEXT.body not in said and "the token" not in said
    assert CUSTOMER.lstrip("+") not in caplog.text and TEXT.body not in caplog.text


LISTED: list[dict[str, Any]] = [
    {"sid": "SM4", "body": TEXT.body, "date_created": "Mon, 02 Nov 2026 15:00:40 +0000", "status": "queued"},
    {"sid": "SM3", "body": "another", "date_created": "Mon, 02 Nov 2026 15:00:30 +0000", "status": "sent"},
    {"sid": "SM2", "body": TEXT.body, "date_created": "Mon, 02 Nov 2026 15:00:00 +0000", "status": "delivered"},
    {"sid": "SM1", "body": TEXT.body, "date_created": "Mon, 02 Nov 2026 14:59:00 +0000", "status": "delivered"},
    {"sid": "SM0", "body": "", "date_created": None, "status": "queued"},
]


@responses.activate
def test_a_text_is_looked_up_by_number_wording_and_time(provider: Twilio) -> None:
    # Form of the list: the provider's public documents. No filter by day of sending: a queued text has none.
    asked = {"To": CUSTOMER, "From": SHOP, "PageSize": "1000"}
    rows = [{"to": CUSTOMER, "from": SHOP, "direction": "outbound-api", **row} for row in LISTED]
    first = {"messages": rows[:2], "next_page_uri": f"/2010-04-01/Accounts/{ACCOUNT}/Messages.json?Page=1"}
    responses.get(MESSAGES, json=first, match=[matchers.query_param_matcher(asked)])
    second = {"messages": rows[2:], "next_page_uri": None}
    responses.get(MESSAGES, json=second, match=[matchers.query_param_matcher({"Page": "1"})])
    found = provider.find_sent(CUSTOMER, SHOP, TEXT.body, SINCE)
    assert [(one.provider_id, one.status) for one in found] == [("SM2", "delivered"), ("SM4", "queued")]


@pytest.mark.parametrize("status", [401, 429, 500, 200])
@responses.activate
def test_a_list_that_cannot_be_read_says_so(provider: Twilio, status: int) -> None:
    responses.get(MESSAGES, body="<html>", status=status)
    with pytest.raises(LookUpFailed):
        provider.find_sent(CUSTOMER, SHOP, TEXT.body, SINCE)
    with pytest.raises(LookUpFailed):
        provider.list_inbound(SINCE)


@responses.activate
def test_missed_answers_are_listed_by_day_and_told_apart(provider: Twilio) -> None:
    base = {"to": SHOP, "from": CUSTOMER, "direction": "inbound", "status": "received", "num_media": "1"}
    rows = [
        {**base, "sid": "SM3", "body": "later", "date_created": "Mon, 02 Nov 2026 16:00:00 +0000"},
        {**base, "sid": "SM2", "body": "first", "date_created": "Mon, 02 Nov 2026 15:00:00 +0000"},
        {**base, "sid": "SM1", "body": "before", "date_created": "Mon, 02 Nov 2026 14:00:00 +0000"},
        {**base, "sid": "SM0", "direction": "outbound-api", "date_created": "Mon, 02 Nov 2026 16:00:00 +0000"},
    ]
    asked = {"To": SHOP, "DateSent>": "2026-11-02T00:00:00Z", "PageSize": "1000"}
    page = {"messages": rows, "next_page_uri": None}
    responses.get(MESSAGES, json=page, match=[matchers.query_param_matcher(asked)])
    listed = provider.list_inbound(SINCE)
    assert [(one.provider_id, one.body, one.media_count) for one in listed] == [
        ("SM2", "first", 1),
        ("SM3", "later", 1),
    ]


def hook(**changed: str) -> MultiDict[str, str]:
    given = {"AccountSid": ACCOUNT, "MessageSid": SID, "From": CUSTOMER, "To": SHOP, "Body": "hi", **changed}
    return MultiDict(given)


def test_a_hook_of_another_account_is_refused(provider: Twilio) -> None:
    with pytest.raises(ForeignHook):
        provider.read_inbound(hook(AccountSid="AC" + "1" * 32))
    with pytest.raises(ForeignHook):
        provider.read_status(hook(AccountSid="AC" + "1" * 32, MessageStatus="sent"))


def test_the_providers_own_keywords_are_told(provider: Twilio) -> None:
    assert provider.read_inbound(hook(OptOutType="STOP")).provider_caught == "stop"
    assert provider.read_inbound(hook(OptOutType="NEW")).provider_caught is None
    assert provider.read_inbound(hook()).provider_caught is None


@pytest.mark.parametrize(
    "changed",
    [{"MessageSid": "SM1"}, {"MessageSid": "SM" + "G" * 32}, {"From": "ann"}, {"NumMedia": "many"}, {"To": ""}],
)
def test_a_hook_with_something_else_in_a_field_is_not_usable(provider: Twilio, changed: dict[str, str]) -> None:
    with pytest.raises(UnusableHook):
        provider.read_inbound(hook(**changed))


@pytest.mark.parametrize(
    ("code", "problem"),
    [
        ("30003", Unreachable),
        ("30007", Filtered),
        ("30006", BadNumber),
        ("30034", NotRegistered),
        ("12", ProvenRefused),
    ],
)
def test_a_report_says_why_a_text_did_not_arrive(provider: Twilio, code: str, problem: type[ProvenRefused]) -> None:
    report = provider.read_status(hook(MessageStatus="undelivered", ErrorCode=code))
    assert (report.code, report.problem) == (int(code), problem)
    assert provider.read_status(hook(MessageStatus="delivered", ErrorCode="")).problem is None


def test_error_classes_are_those_of_the_providers_documents() -> None:
    # Source: the provider's public list of error codes, read; classes by the titles there.
    documented: dict[type[ProvenRefused], set[int]] = {
        OptedOut: {21610},
        BadNumber: {21211, 21614, 21604, 30005, 30006},
        RegionClosed: {21408},
        Unreachable: {30003},
        Filtered: {30004, 30007},
        RateLimited: {30001, 21611, 20429},
        NotRegistered: {30034, 30035},
    }
    for refusal, codes in documented.items():
        assert {refusal_of(code) for code in codes} == {refusal}
    assert refusal_of(None) is refusal_of(1) is ProvenRefused


def test_no_code_means_two_things_and_no_class_is_forgotten() -> None:
    codes = [code for several in CODES.values() for code in several]
    assert len(codes) == len(set(codes))
    refusals = {kind for kind in vars(words).values() if isinstance(kind, type) and issubclass(kind, ProvenRefused)}
    assert refusals - set(CODES) == {ProvenRefused, NotAccepted}


def test_who_may_be_tried_again() -> None:
    # Common practice: opted out, bad number, filtered are never retried; waiting in line is no attempt.
    final = {refusal for refusal in CODES if refusal.is_permanent}
    assert final == {OptedOut, BadNumber, RegionClosed, Filtered, BadText}
    assert {refusal for refusal in CODES if not refusal.counts_as_attempt} == {
        RateLimited,
        NotRegistered,
        AccountRefused,
    }
    assert {refusal for refusal in CODES if refusal.is_about_sender} == {NotRegistered, AccountRefused}
