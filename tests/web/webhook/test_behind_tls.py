"""A proxy that really ends TLS, before the pages as a shop runs them: its word counts, the client's own does not.

Source: fault I6 of this project's list. The signature's oracle is the provider's own client; the handshake is that of
`ssl`, which checks the certificate and its name as the provider does. The certificate is made here and thrown away.
"""

from __future__ import annotations

import re
import shutil
import socket
import ssl
import subprocess
import threading
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass
from http.client import HTTPConnection
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from urllib.parse import urlencode

import pytest
from sqlalchemy import select

from followup.storage import shops, tables
from followup.storage.store import Store, make_engine
from tests.shop_of_tests import BEGIN
from tests.web.webhook.conftest import BASE, TO, TOKEN, encode, sign, text_form
from tests.web.webhook.served_hooks import served_hooks

HOST = BASE.partition("//")[2]
SPOOFED = {
    "X-Forwarded-Host": "evil.example", "X-Forwarded-Proto": "http", "X-Forwarded-For": "203.0.113.9",
    "X-Forwarded-Prefix": "/other", "X-Forwarded-Port": "81", "Forwarded": "for=203.0.113.9;host=evil.example",
}  # fmt: skip
FORM = "application/x-www-form-urlencoded"


class Proxy(BaseHTTPRequestHandler):
    """Hands each request on in plain HTTP. `tells` as a shop's proxy is set up: protocol and host are its own word, the
    client's address stands behind whatever the client said; else it hands all on as it came."""

    port, tells = 0, False
    protocol_version = "HTTP/1.1"

    def do_GET(self) -> None:
        """As a post."""
        self.do_POST()

    def do_POST(self) -> None:
        """Ask the pages, and hand back what they say."""
        body = self.rfile.read(int(self.headers.get("Content-Length", 0)))
        headers = {name: value for name, value in self.headers.items() if name not in ("Connection", "Content-Length")}
        if self.tells:
            before = f"{headers.get('X-Forwarded-For')}, " if "X-Forwarded-For" in headers else ""
            headers |= {"X-Forwarded-For": before + self.client_address[0], "X-Forwarded-Proto": "https"}
            headers["X-Forwarded-Host"] = headers["Host"]
        link = HTTPConnection("127.0.0.1", self.port, timeout=20)
        link.request(self.command, self.path, body, headers)
        answer = link.getresponse()
        content = answer.read()
        self.send_response(answer.status)
        for name, value in answer.getheaders():
            if name not in ("Content-Length", "Connection", "Date", "Server"):
                self.send_header(name, value)
        self.send_header("Content-Length", str(len(content)))
        self.end_headers()
        self.wfile.write(content)
        link.close()

    def log_message(self, *_: object) -> None:
        """Nothing."""


@dataclass
class Client:
    """Somebody on the outside: TLS with the certificate checked, and a browser's cookie."""

    port: int
    trusts: ssl.SSLContext
    cookie: str = ""

    def ask(
        self, method: str, path: str, body: bytes | str | None = None, headers: Mapping[str, str] | None = None
    ) -> tuple[int, dict[str, str], str]:
        """Status, headers and body of the answer."""
        link = HTTPConnection(HOST, timeout=20)
        plain = socket.create_connection(("127.0.0.1", self.port), 20)
        link.sock = self.trusts.wrap_socket(plain, server_hostname=HOST)
        told = {"Content-Type": FORM, **({"Cookie": self.cookie} if self.cookie else {}), **(headers or {})}
        try:
            link.request(method, path, body, told)
            answer = link.getresponse()
            if cookie := answer.getheader("Set-Cookie"):
                self.cookie = cookie.partition(";")[0]
            return answer.status, dict(answer.getheaders()), answer.read().decode()
        finally:
            link.close()


@pytest.fixture(scope="module")
def certificate(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, Path]:
    """A self-signed certificate of the public address, and its key."""
    openssl = shutil.which("openssl")
    if openssl is None:
        pytest.skip("no openssl here to make a certificate with (apt-get install openssl)")
    folder = tmp_path_factory.mktemp("tls")
    made, key = folder / "certificate.pem", folder / "key.pem"
    subprocess.run(
        [openssl, "req", "-x509", "-newkey", "ec", "-pkeyopt", "ec_paramgen_curve:prime256v1", "-nodes", "-days", "2",
         "-subj", f"/CN={HOST}", "-addext", f"subjectAltName=DNS:{HOST}", "-keyout", str(key), "-out", str(made)],
        check=True, capture_output=True,
    )  # fmt: skip
    return made, key


@contextmanager
def _proxied(certificate: tuple[Path, Path], port: int, tells: bool) -> Iterator[Client]:
    """A client whose way leads through the proxy."""
    context = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
    context.load_cert_chain(*certificate)
    handler = type("OneProxy", (Proxy,), {"port": port, "tells": tells})
    with ThreadingHTTPServer(("127.0.0.1", 0), handler) as server:
        server.socket = context.wrap_socket(server.socket, server_side=True)
        thread = threading.Thread(target=server.serve_forever, args=(0.05,), daemon=True)
        thread.start()
        try:
            yield Client(server.server_address[1], ssl.create_default_context(cafile=str(certificate[0])))
        finally:
            server.shutdown()
            thread.join(5)


@pytest.mark.parametrize("proxies", [0, 1])
def test_the_proxys_word_counts_and_the_clients_does_not(
    certificate: tuple[Path, Path], tmp_path: Path, proxies: int
) -> None:
    with served_hooks(tmp_path, proxies) as port, _proxied(certificate, port, tells=proxies == 1) as client:
        store = Store(make_engine(f"sqlite+pysqlite:///{tmp_path / 'served.db'}"))
        facts = {"name": "Elm Street Auto", "zone": "America/Chicago", "phone": "+13125550100", "texts_from": TO}
        with store.write() as connection:
            shops.add_shop(connection, BEGIN, "elm", facts)
        _post_hooks(client)
        with store.read() as connection:
            kept = connection.execute(select(tables.inbound.c.provider_id)).scalars().all()
            assert len(kept) == len(set(kept)) == 2, "each once, and nothing that was forged"
        _sign_in_wrongly(client)
        with store.read() as connection:
            found = connection.execute(select(tables.sign_in_failures.c.address)).scalars().all()
        store.close()
    assert found == ["127.0.0.1"] * 2, "tries are counted where they really come from"


def _post_hooks(client: Client) -> None:
    """The provider posts to the public address; others sign for what they say the address is."""
    from twilio.request_validator import RequestValidator

    for number, headers in enumerate(({}, SPOOFED, {"Host": f"{HOST}:443"})):
        form = text_form("thanks", f"SM{min(number, 1):032x}")
        for signature, expected in ((sign("/hooks/texts", form), 204), ("AAAA", 403)):
            signed = {**headers, "X-Twilio-Signature": signature}
            assert client.ask("POST", "/hooks/texts", encode(form.items()), signed)[0] == expected, headers
    for address in ("https://evil.example", f"http://{HOST}", "http://evil.example", "https://evil.example/other"):
        form = text_form("STOP", "SM" + "9" * 32)
        forged = RequestValidator(TOKEN).compute_signature(f"{address}/hooks/texts", form)
        signed = {**SPOOFED, "X-Twilio-Signature": forged}
        assert client.ask("POST", "/hooks/texts", encode(form.items()), signed)[0] == 403, address


def _sign_in_wrongly(client: Client) -> None:
    """The form is taken over TLS, its cookie is bound to it, and no header leads elsewhere."""
    for headers in ({}, SPOOFED):
        status, told, page = client.ask("GET", "/sign-in", headers=headers)
        assert status == 200 and "max-age" in told["Strict-Transport-Security"]
        assert client.cookie.startswith("__Host-followup=")
        token = re.search(r'name="csrf_token" value="([^"]+)"', page)
        assert token
        form = urlencode({"login": "nobody", "password": "a guess", "csrf_token": token[1]})
        referred = {"Referer": f"{BASE}/sign-in", "Origin": BASE, **headers}
        assert client.ask("POST", "/sign-in", form, referred)[0] == 422
        # Who is not signed in is led to our own page, whatever host the client names.
        status, told, _ = client.ask("GET", "/shop-floor/", headers=headers)
        assert status == 303 and told["Location"].startswith("/sign-in"), told
