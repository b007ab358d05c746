"""Posts to a hook at a rate or as fast as it takes them, and tells how long each answer took."""

from __future__ import annotations

import threading
import time
from collections.abc import Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from http.client import HTTPConnection
from itertools import count
from urllib.parse import urlencode

import numpy as np

from followup.transports.local_phone import signed_post

CONNECTIONS = 16
PATH = "/hooks/texts"


@dataclass(frozen=True)
class Poster:
    """Who posts: the port, the public address that is signed, the account and its token, and the number written to."""

    port: int
    address: str
    account: str
    token: str
    to: str


@dataclass(frozen=True)
class Answers:
    """How long answers took, in milliseconds from the moment at which each was to be posted; what was not accepted."""

    milliseconds: tuple[float, ...]
    per_second: float
    refused: int

    def at(self, percent: float) -> float:
        """The percentile."""
        return float(np.percentile(self.milliseconds, percent)) if self.milliseconds else float("inf")


_sids = count(1)


def requests_of(poster: Poster, bodies: Sequence[str], how_many: int) -> list[tuple[bytes, dict[str, str]]]:
    """Signed posts, each a new text, from four hundred numbers in turn."""
    made = []
    for number in range(how_many):
        sender = f"+1{(312, 217, 206, 608)[number % 4]}555{100 + number // 4 % 100:04d}"
        form = {
            "AccountSid": poster.account, "MessageSid": f"SM{next(_sids):032x}", "From": sender, "To": poster.to,
            "Body": bodies[number % len(bodies)], "NumMedia": "0", "NumSegments": "1", "SmsStatus": "received",
        }  # fmt: skip
        (signature,) = signed_post(poster.address + PATH, form, poster.token).values()
        headers = {"X-Twilio-Signature": signature, "Content-Type": "application/x-www-form-urlencoded"}
        made.append((urlencode(form).encode(), headers))
    return made


def post_at(poster: Poster, bodies: Sequence[str], rate: float, seconds: float) -> Answers:
    """Post so many a second, whether earlier ones were answered or not: who waits in line is late by the wait."""
    posts = requests_of(poster, bodies, int(rate * seconds))
    begins_at = time.monotonic() + 0.1
    return _post_all(poster, posts, [begins_at + number / rate for number in range(len(posts))])


def post_as_fast_as_taken(poster: Poster, bodies: Sequence[str], how_many: int) -> Answers:
    """Post all of it, each connection its next as soon as the one before was answered."""
    return _post_all(poster, requests_of(poster, bodies, how_many), None)


def _post_all(
    poster: Poster, posts: list[tuple[bytes, dict[str, str]]], planned: list[float] | None
) -> Answers:  # fmt: skip
    next_one, lock = iter(range(len(posts))), threading.Lock()
    taken: list[float] = []
    refused: list[int] = []
    pause = threading.Event()

    def work(_: int) -> None:
        link = HTTPConnection("127.0.0.1", poster.port, timeout=30)
        while True:
            with lock:
                place = next(next_one, None)
            if place is None:
                link.close()
                return
            begins = time.monotonic() if planned is None else planned[place]
            pause.wait(max(0.0, begins - time.monotonic()))
            link.request("POST", PATH, *posts[place])
            answer = link.getresponse()
            answer.read()
            taken.append((time.monotonic() - begins) * 1000)
            if answer.status != 204:
                refused.append(answer.status)

    began = time.monotonic()
    with ThreadPoolExecutor(CONNECTIONS) as pool:
        list(pool.map(work, range(CONNECTIONS)))
    return Answers(tuple(taken), len(taken) / (time.monotonic() - began), len(refused))
