"""A provider on this machine, made of a bare socket, that can also misbehave after it has taken a request."""

import json
import socket
import struct
import threading
from collections.abc import Callable
from email.utils import format_datetime
from typing import Any
from urllib.parse import parse_qs, urlsplit

from followup import clock

Answer = Callable[[socket.socket, bytes], None]


class Loopback:
    """Accepts connections, reads each request whole, keeps it, and leaves the answer to `answer`."""

    def __init__(self, answer: Answer) -> None:
        """Use as a context: `with Loopback(answer) as provider`."""
        self.requests: list[bytes] = []
        self._answer = answer
        self._listener = socket.create_server(("127.0.0.1", 0))
        self.address = f"http://127.0.0.1:{self._listener.getsockname()[1]}"
        self._is_over = threading.Event()
        self._threads: list[threading.Thread] = []

    def __enter__(self) -> "Loopback":
        self._start(self._accept)
        return self

    def __exit__(self, *_: object) -> None:
        self._is_over.set()
        # Wakes the thread that waits for a connection.
        socket.create_connection(self._listener.getsockname()).close()
        for thread in self._threads:
            thread.join(timeout=5)
        self._listener.close()

    @property
    def posts(self) -> int:
        """How many requests would have made a text."""
        return sum(request.startswith(b"POST ") for request in self.requests)

    def wait(self, connection: socket.socket, _: bytes) -> None:
        """An answer that never comes."""
        self._is_over.wait(timeout=30)

    def _start(self, work: Callable[..., None], *given: object) -> None:
        thread = threading.Thread(target=work, args=given, daemon=True)
        self._threads.append(thread)
        thread.start()

    def _accept(self) -> None:
        while not self._is_over.is_set():
            connection, _ = self._listener.accept()
            self._start(self._serve, connection)

    def _serve(self, connection: socket.socket) -> None:
        with connection:
            request = read_request(connection)
            if request:
                self.requests.append(request)
                self._answer(connection, request)


def read_request(connection: socket.socket) -> bytes:
    """One whole request; empty where the other side closed without one."""
    connection.settimeout(5)
    data = b""
    while b"\r\n\r\n" not in data:
        part = connection.recv(65536)
        if not part:
            return b""
        data += part
    head, _, body = data.partition(b"\r\n\r\n")
    lengths = [line.split(b":")[1] for line in head.split(b"\r\n") if line.lower().startswith(b"content-length:")]
    while len(body) < int(lengths[0] if lengths else 0):
        body += connection.recv(65536)
    return head + b"\r\n\r\n" + body


def answer_with(status: str, body: bytes, kind: str = "application/json", length: int | None = None) -> Answer:
    """An answer; `length` may claim more than there is, so that it breaks off."""

    def answer(connection: socket.socket, _: bytes) -> None:
        head = f"HTTP/1.1 {status}\r\nContent-Type: {kind}\r\nContent-Length: {length or len(body)}\r\n"
        connection.sendall(head.encode() + b"Connection: close\r\n\r\n" + body)

    return answer


def reset(connection: socket.socket, _: bytes) -> None:
    """Breaks the connection off with a reset."""
    connection.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, struct.pack("ii", 1, 0))


def close(connection: socket.socket, _: bytes) -> None:
    """Ends the connection without a word."""


class Account:
    """What the provider keeps: takes texts, lists them, in the provider's documented JSON."""

    def __init__(self) -> None:
        """Starts without texts."""
        self.texts: list[dict[str, Any]] = []

    def answer(self, connection: socket.socket, request: bytes) -> None:
        """Answers a request to take a text, or to list them by To and From."""
        head, _, body = request.partition(b"\r\n\r\n")
        method, target, _ = head.split(b"\r\n")[0].decode().split(" ")
        if method == "POST":
            form = {name: values[0] for name, values in parse_qs(body.decode()).items()}
            text = self.add(form["To"], form["From"], form["Body"], "outbound-api", "queued")
            answer_with("201 Created", json.dumps(text).encode())(connection, request)
            return
        asked = parse_qs(urlsplit(target).query)
        named = {name: asked[name][0] for name in ("To", "From") if name in asked}
        found = [text for text in self.texts if all(text[name.lower()] == value for name, value in named.items())]
        page = {"messages": found, "next_page_uri": None, "page": 0, "page_size": 1000, "uri": target}
        answer_with("200 OK", json.dumps(page).encode())(connection, request)

    def add(self, to: str, sender: str, body: str, direction: str, status: str) -> dict[str, Any]:
        """Keeps one more text, the newest first."""
        at = format_datetime(clock.now())
        sid = f"SM{len(self.texts):032x}"
        text = {"sid": sid, "to": to, "from": sender, "body": body, "status": status, "direction": direction}
        self.texts.insert(0, {**text, "date_created": at, "date_sent": None, "num_media": "0", "error_code": None})
        return self.texts[0]
