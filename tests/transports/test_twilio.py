"""What the provider answers, and what it is called here: exactly one POST each, whatever comes back."""

import socket
import ssl
from collections.abc import Callable
from typing import Any

import pytest
import requests
import responses
from responses import matchers
from urllib3 import exceptions

from followup.transports import transport as words
from followup.transports.transport import (
    AccountRefused,
    BadNumber,
    BadText,
    Filtered,
    NotAccepted,
    NotRegistered,
    OptedOut,
    OutcomeUnknown,
    ProvenRefused,
    RateLimited,
    RegionClosed,
    Unreachable,
)
from followup.transports.twilio import CODES, Twilio, refusal_of
from tests.transports.account import CUSTOMER, MESSAGES, SHOP, SID, TEXT


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
