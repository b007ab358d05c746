"""A provider on this machine that speaks HTTP to the real client and misbehaves as its fates say.

It takes texts, lists them, gives one back, and posts signed delivery reports to the address that came with a text. It
keeps every request that would have made a text, so that a judge can tell what was taken and how often.

What customers write is posted to the shop's hook and listed; a hook that nobody answers is given up. The whole provider
can be away: then connections are refused, or every answer is 503 and nothing is taken.
"""

from __future__ import annotations

import base64
import json
import select
import socket
import struct
import threading
from collections.abc import Callable
from contextlib import suppress
from datetime import datetime, timedelta
from http.client import HTTPConnection
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from itertools import takewhile
from typing import Any
from urllib.parse import parse_qs, urlencode, urlsplit

from followup.rehearsal.faults.fate import ANSWERED, Fate, Fates
from followup.rehearsal.faults.posts import Post as Post
from followup.rehearsal.faults.posts import Written as Written
from followup.rehearsal.faults.posts import as_json
from followup.transports.local_phone import sign

# Where a process of the trial asks that time go on; nothing of a provider's.
TIME = "/time"
ACCOUNT, TOKEN = "AC" + "0" * 32, "a token of this trial"
# Longer than the client waits.
_SILENT_FOR_SECONDS = 60.0


PostHook = Callable[[str, dict[str, str], dict[str, str]], int | None]
"""Posts a form with its headers to an address: the status of the answer, or None where nobody is there."""


def post_over_http(url: str, form: dict[str, str], headers: dict[str, str]) -> int | None:
    """Post to a server that listens."""
    parts = urlsplit(url)
    link = HTTPConnection(parts.hostname or "", parts.port, timeout=15)
    try:
        link.request("POST", parts.path, urlencode(form), headers)
        return link.getresponse().status
    except OSError:
        return None
    finally:
        link.close()


class _Form(dict[str, str]):
    def getlist(self, key: str, /) -> list[str]:
        return [self[key]] if key in self else []


class Provider:
    """Use as a context. `now` tells the time that the trial steps, `pass_time` steps it on, `post_hook` reaches the
    program's hooks."""

    def __init__(
        self,
        fates: Fates,
        now: Callable[[], datetime],
        pass_time: Callable[[datetime], object] = lambda _instant: None,
        post_hook: PostHook = post_over_http,
    ) -> None:
        self.posts: list[Post] = []
        self.written: list[Written] = []
        # Every answer is 503 and nothing is taken.
        self.is_out_of_order = False
        self.post_hook = post_hook
        self.reported: list[tuple[datetime, str, str]] = []
        self.refused_reports: list[int] = []
        self.when_taken: Callable[[int], None] = lambda _count: None
        self.pass_time = pass_time
        self._fates, self._now = fates, now
        self._due: list[tuple[datetime, int, Post, str]] = []
        self._posts_to: dict[str, list[Post]] = {}
        # Drawn ahead: what becomes of the next request to a number, and of the next look at the list.
        self._drawn: dict[str, Fate] = {}
        self._list_drawn: bool | None = None
        self._lock = threading.Lock()
        provider = self

        class Handler(_Handler):
            at = provider

        self._handler = Handler
        self._server: _Server | None = _Server(("127.0.0.1", 0), Handler)
        self._port = int(self._server.server_address[1])
        self.address = f"http://127.0.0.1:{self._port}"

    def __enter__(self) -> Provider:
        self._serve()
        return self

    def __exit__(self, *_: object) -> None:
        self.go_away()

    def _serve(self) -> None:
        assert self._server is not None
        threading.Thread(target=self._server.serve_forever, args=(0.02,), daemon=True).start()

    def go_away(self) -> None:
        """Refuse every connection from now on, and break off those that stand."""
        if self._server is not None:
            self._server.shutdown()
            self._server.break_off()
            self._server.server_close()
            self._server = None

    def come_back(self) -> None:
        """Listen again at the same address."""
        if self._server is None:
            self._server = _Server(("127.0.0.1", self._port), self._handler)
            self._serve()

    @property
    def taken(self) -> list[Post]:
        """Every text that was taken."""
        return [post for post in self.posts if post.sid]

    def posts_to(self, number: str) -> list[Post]:
        """Every request for that number."""
        return self._posts_to.get(number, [])

    def take(self, form: dict[str, str]) -> Post:
        """Keep a request, and where its fate is so, the text."""
        parts = urlsplit(form["StatusCallback"]).path.split("/")
        with self._lock:
            fate, at = self._draw(form["To"]), self._now()
            sid = f"SM{len(self.posts):032x}" if fate.is_taken else None
            post = Post(
                parts[-2], int(parts[-1]), form["To"], form["From"], form["Body"], int(form["ValidityPeriod"]),
                form["StatusCallback"], at, fate, sid,
            )  # fmt: skip
            self.posts.append(post)
            self._posts_to.setdefault(post.to, []).append(post)
            for number, (delay, status) in enumerate(fate.reports if sid else ()):
                self._due.append((post.taken_at + delay, number, post, status))
        return post

    def _draw(self, number: str) -> Fate:
        if self.is_out_of_order:
            return Fate("503, out of order", is_taken=False)
        return self._drawn.pop(number, None) or self._fates.draw(number)

    @property
    def is_well(self) -> bool:
        """Whether it listens and is in order."""
        return self._server is not None and not self.is_out_of_order

    def answers_next(self, number: str) -> bool:
        """Whether the next request to that number will be taken and answered as it should be; drawn ahead."""
        with self._lock:
            if not self.is_well:
                return False
            if number not in self._drawn:
                self._drawn[number] = self._fates.draw(number)
            return self._drawn[number].how == ANSWERED

    def lists_next(self) -> bool:
        """The same of the next look at the list."""
        with self._lock:
            if not self.is_well:
                return False
            if self._list_drawn is None:
                self._list_drawn = self._fates.list_fails()
            return not self._list_drawn

    def shown(self, number: str | None, sender: str | None, since: str = "") -> list[dict[str, Any]]:
        """What the list shows now, the newest first; `since` a day (`2026-11-23`), or all of it."""
        now = self._now()
        found: list[Post | Written] = [
            post for post in (self.taken if number is None else self.posts_to(number))
            if post.sid and post.taken_at + post.fate.lag <= now and sender in (None, post.sender)
        ]  # fmt: skip
        heard = self.heard(number, sender, since)
        return [as_json(one) for one in reversed([*found, *heard])]

    def heard(self, number: str | None, sender: str | None = None, since: str = "") -> list[Written]:
        """What was written to that number since that day and is listed by now, the oldest first; it counts as read."""
        now = self._now()
        # In the order of time: what is older than asked for need not be looked through.
        lately = takewhile(lambda one: one.at.date().isoformat() >= since, reversed(self.written))
        found = [
            one for one in lately
            if one.at + one.lag <= now and number in (None, one.to) and sender in (None, one.sender)
        ][::-1]  # fmt: skip
        for one in found:
            one.listed_at = one.listed_at or now
        return found

    def write(
        self, sender: str, to: str, body: str, url: str, meant: str = "", lag: timedelta = timedelta(0)
    ) -> Written:
        """A customer writes to the shop: it is kept for the list and posted to the hook at that address."""
        with self._lock:
            written = Written(f"SMe{len(self.written):031x}", sender, to, body, self._now(), meant, lag)
            self.written.append(written)
        self.post_again(written, url)
        return written

    def post_again(self, written: Written, url: str) -> None:
        """Post what a customer wrote to the hook, as it was posted before."""
        form = _Form(
            AccountSid=ACCOUNT, MessageSid=written.sid, From=written.sender, To=written.to, Body=written.body,
            NumMedia="0", ApiVersion="2010-04-01",
        )  # fmt: skip
        answer = self._post(url, form)
        if answer is not None and answer // 100 == 2:
            written.acknowledged_at = written.acknowledged_at or self._now()

    def next_report_at(self) -> datetime | None:
        """When the next delivery report is due."""
        with self._lock:
            return min((due for due, *_ in self._due), default=None)

    def report_due(self) -> None:
        """Post every delivery report that is due."""
        with self._lock:
            due = sorted((one for one in self._due if one[0] <= self._now()), key=lambda one: (one[0], one[1]))
            self._due = [one for one in self._due if one not in due]
        for _, _, post, status in due:
            self._report(post, status)

    def report_early(self, post: Post) -> None:
        """Post those reports that come before the answer to the request."""
        with self._lock:
            due = [one for one in self._due if one[2] is post and one[0] == post.at]
            self._due = [one for one in self._due if one not in due]
        for _, _, _, status in due:
            self._report(post, status)

    def list_fails(self) -> bool:
        """Whether the list cannot be read this time."""
        with self._lock:
            drawn, self._list_drawn = self._list_drawn, None
            return self._fates.list_fails() if drawn is None else drawn

    def _report(self, post: Post, status: str) -> None:
        form = _Form(
            AccountSid=ACCOUNT, MessageSid=str(post.sid), MessageStatus=status, To=post.to, From=post.sender,
            ApiVersion="2010-04-01",
        )  # fmt: skip
        answer = self._post(post.callback, form)
        if answer is not None and answer // 100 == 2:
            self.reported.append((self._now(), post.public_id, status))

    def _post(self, url: str, form: _Form) -> int | None:
        """Post a signed form; where nobody is there the provider gives up."""
        headers = {"X-Twilio-Signature": sign(url, form, TOKEN), "Content-Type": "application/x-www-form-urlencoded"}
        answer = self.post_hook(url, form, headers)
        if answer is not None and answer // 100 != 2:
            self.refused_reports.append(answer)
        return answer


class _Server(ThreadingHTTPServer):
    daemon_threads = True

    def __init__(self, address: tuple[str, int], handler: type[BaseHTTPRequestHandler]) -> None:
        super().__init__(address, handler)
        self._open: set[socket.socket] = set()

    def process_request(self, request: Any, client_address: Any) -> None:
        """Remember the connection."""
        self._open.add(request)
        super().process_request(request, client_address)

    def shutdown_request(self, request: Any) -> None:
        """Forget it."""
        self._open.discard(request)
        super().shutdown_request(request)

    def break_off(self) -> None:
        """Close every connection that stands."""
        for one in list(self._open):
            with suppress(OSError):
                one.shutdown(socket.SHUT_RDWR)

    def handle_error(self, request: object, client_address: object) -> None:
        """Nothing to say: who asked was killed."""


class _Handler(BaseHTTPRequestHandler):
    """Reads requests, and answers or breaks off as the fate of each says."""

    protocol_version = "HTTP/1.1"
    at: Provider

    def log_message(self, format: str, *args: object) -> None:  # noqa: A002  # the name that it overrides
        """Say nothing."""

    def do_POST(self) -> None:  # called by that name
        """Take a text."""
        raw = self.rfile.read(int(self.headers["Content-Length"])).decode()
        if not self._may_enter():
            self._answer(401, {"code": 20003})
            return
        post = self.at.take({name: values[0] for name, values in parse_qs(raw).items()})
        self.at.when_taken(len(self.at.posts))
        self.at.report_early(post)
        self._do_as(post.fate.how, as_json(post))

    def do_GET(self) -> None:  # called by that name
        """List texts, or give one back."""
        target = urlsplit(self.path)
        asked = {name: values[0] for name, values in parse_qs(target.query).items()}
        if target.path == TIME:
            self.at.pass_time(datetime.fromisoformat(asked["to"]))
            self._answer(200, {})
            return
        if not self._may_enter() or self.at.is_out_of_order or self.at.list_fails():
            self._answer(503, {"code": 20503})
            return
        found = self.at.shown(asked.get("To"), asked.get("From"), asked.get("DateSent>", "")[:10])
        if not target.path.endswith("/Messages.json"):
            wanted = target.path.rsplit("/", 1)[-1].removesuffix(".json")
            one = next((text for text in found if text["sid"] == wanted), None)
            self._answer(200 if one else 404, one or {"code": 20404})
            return
        self._answer(200, {"messages": found, "next_page_uri": None, "page": 0, "page_size": 1000, "uri": self.path})

    def _may_enter(self) -> bool:
        given = base64.b64encode(f"{ACCOUNT}:{TOKEN}".encode()).decode()
        return self.headers.get("Authorization") == f"Basic {given}"

    def _do_as(self, how: str, text: dict[str, Any]) -> None:
        if how.startswith(("silent", "late")):
            # Until the client gives up or is killed.
            select.select([self.connection], [], [], _SILENT_FOR_SECONDS)
        elif how == "reset":
            self.connection.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, struct.pack("ii", 1, 0))
        elif how == "half an answer":
            self._answer(201, text, cut=True)
        elif how == "HTML":
            self._answer(201, {}, page="<html><body>Please wait</body></html>")
        elif how == "no sid":
            self._answer(201, {"status": "queued"})
        elif how in ("21211", "21610", "20003"):
            self._answer(401 if how == "20003" else 400, {"code": int(how)})
        elif how[:3] in ("429", "500", "503", "400"):
            self._answer(int(how[:3]), {"code": 20429 if how[:3] == "429" else 20500}, wait="for" in how)
        elif how == "answered":
            self._answer(201, text)
            return
        self.close_connection = True

    def _answer(
        self, status: int, words: dict[str, Any], *, page: str | None = None, cut: bool = False, wait: bool = False
    ) -> None:
        body = (page or json.dumps(words)).encode()
        self.send_response(status)
        self.send_header("Content-Type", "text/html" if page else "application/json")
        self.send_header("Content-Length", str(len(body)))
        if wait:
            self.send_header("Retry-After", str(int(timedelta(seconds=20).total_seconds())))
        self.end_headers()
        self.wfile.write(body[: len(body) // 2] if cut else body)
