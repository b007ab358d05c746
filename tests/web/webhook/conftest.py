"""A shop behind a TLS proxy, and the provider's way of posting to its hooks."""

from __future__ import annotations

import threading
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from typing import Any
from urllib.parse import quote_plus

import pytest
from flask import Flask
from sqlalchemy import func, select
from twilio.request_validator import RequestValidator
from werkzeug.datastructures import MultiDict

from followup.settings import Settings
from followup.storage import tables
from followup.storage.rows import Row, every
from followup.transports.twilio import Twilio
from followup.web.app import create_app
from followup.wiring import House
from tests.transports.account import ACCOUNT
from tests.web.house import settings
from tests.workflows.counter import NOW, NUMBER, Counter, open_counter

BASE, TO, TOKEN = "https://texts.example", "+13125550101", "the token"
SID = "SM" + "1" * 32
# What is counted: whatever a hook might change.
WATCHED = (
    tables.inbound, tables.dead_letters, tables.texts, tables.consents, tables.status_reports, tables.phones,
    tables.alerts, tables.audit, tables.booking_requests,
)  # fmt: skip


class StillHouse(House):
    """A house whose clock stands."""

    def now(self) -> Any:
        return NOW


def open_house(counter: Counter, tokens: tuple[str, ...] = (TOKEN,), **others: object) -> StillHouse:
    """The house of a process that starts now."""
    whole: Settings = settings(BASE, ledger_hash_key="only-for-tests-0123456789abcdef", **others)
    return StillHouse(whole, counter.store, Twilio(ACCOUNT, tokens, "http://127.0.0.1:9"))


def text_form(body: str = "thanks", sid: str = SID, **others: str) -> dict[str, str]:
    """What the provider posts of a text, with the fields that its documents list."""
    return {
        "AccountSid": ACCOUNT, "ApiVersion": "2010-04-01", "Body": body, "From": NUMBER, "FromCountry": "US",
        "MessageSid": sid, "NumMedia": "0", "NumSegments": "1", "SmsMessageSid": sid, "SmsSid": sid,
        "SmsStatus": "received", "To": TO, "ToCountry": "US", **others,
    }  # fmt: skip


def sign(path: str, form: Any, token: str = TOKEN) -> str:
    """The provider's signature; oracle: its own client."""
    return str(RequestValidator(token).compute_signature(BASE + path, MultiDict(form)))


def encode(fields: Iterable[tuple[str, str]]) -> bytes:
    """A posted form, name by name."""
    return "&".join(f"{quote_plus(name)}={quote_plus(value)}" for name, value in fields).encode()


@dataclass
class Hooks:
    """Posts to the hooks as the provider, or as somebody else."""

    counter: Counter
    app: Flask
    answers: list[int] = field(default_factory=list)

    def post(
        self, form: Any, path: str = "/hooks/texts", *, signature: str | None = None, token: str = TOKEN, **how: Any
    ) -> int:
        """The status of the answer; signed as the provider does where no signature is given."""
        fields = list(MultiDict(form).items(multi=True))
        headers = {"X-Twilio-Signature": sign(path, form, token) if signature is None else signature}
        headers.update(how.pop("headers", {}))
        how.setdefault("content_type", "application/x-www-form-urlencoded")
        how.setdefault("data", encode(fields))
        answer = self.app.test_client().post(path, headers=headers, **how)
        self.answers.append(answer.status_code)
        return answer.status_code

    def at_once(self, *deeds: Callable[[], object]) -> None:
        """Do all of it at the same moment."""
        gate = threading.Barrier(len(deeds))

        def run(deed: Callable[[], object]) -> None:
            gate.wait(10)
            deed()

        threads = [threading.Thread(target=run, args=(deed,)) for deed in deeds]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join(60)

    def restart(self, tokens: tuple[str, ...] = (TOKEN,), **others: object) -> None:
        """The process ends and another one starts."""
        self.app = create_app(open_house(self.counter, tokens, **others))

    def rows(self, table: Any) -> list[Row]:
        """A table's rows, oldest first."""
        with self.counter.store.read() as connection:
            return every(connection, select(table).order_by(table.c.id))

    def counts(self) -> dict[str, int]:
        """How many rows there are of whatever a hook might change."""
        with self.counter.store.read() as connection:
            return {
                table.name: connection.execute(select(func.count()).select_from(table)).scalar_one()
                for table in WATCHED
            }  # fmt: skip


@pytest.fixture
def hooks(database_url: str) -> Hooks:
    """The hooks of a shop on each database."""
    counter = open_counter(database_url)
    return Hooks(counter, create_app(open_house(counter)))


@pytest.fixture
def one_hooks(sqlite_url: str) -> Hooks:
    """The same on SQLite alone, for what no database decides."""
    counter = open_counter(sqlite_url)
    return Hooks(counter, create_app(open_house(counter)))
