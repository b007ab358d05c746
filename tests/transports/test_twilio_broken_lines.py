"""A provider on this machine that breaks off, keeps silent or is not there: what then is known of the text."""

import logging
import socket
import threading
import time
import traceback

import pytest

from followup.transports.transport import (
    LookUpFailed,
    NotAccepted,
    OutcomeUnknown,
)
from tests.transports.account import CUSTOMER, SHOP, SINCE, TEXT, near
from tests.transports.loopback import Loopback, answer_with, close, reset

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
