"""`followup bench checks`: what is asked of each request or text, beside the library that does the bulk of it.

Templates beside Jinja itself, passwords beside argon2 with the same parameters, tokens beside the bare row in SQLite.
Each round measures all of them, one after the other; ratios are those of medians.
"""

from __future__ import annotations

import hashlib
import sqlite3
import tempfile
import time
from collections import defaultdict
from collections.abc import Callable
from dataclasses import dataclass
from itertools import count
from pathlib import Path
from statistics import median
from typing import Any

from argon2 import PasswordHasher, Type
from jinja2 import Environment

from followup import passwords
from followup.core.text import REASONS
from followup.core.wording_facts import complete, sample_facts
from followup.rehearsal import crowd
from followup.rehearsal.bench.figures import Figure, at_least, at_most, beside, within
from followup.storage import outbox, schema
from followup.storage.store import Store, make_engine
from followup.wording import render, shipped
from followup.workflows.keep_tokens import new_token, standing_token
from followup.workflows.look_at_wording import NOT_TO_BE_WORDED, preview
from followup.workflows.send_texts.body import facts_of

RENDERED, JINJA, COMPILED = "wording, rendered", "Jinja, the same template", "Jinja, compiled each time"
PREVIEW = "preview of a new wording on a real car, with all checks"
PASSWORD, ARGON, NOBODY = "password", "argon2 by itself", "password where there is no account"
TOKEN, BARE_TOKEN = "token", "bare SQLite, one row by its key"
# What the design asks: milliseconds for a preview; a name without an account must not be told by the time it takes.
_PREVIEW_WITHIN, _NOBODY_APART = 20.0, 0.1
_PASSWORD_WITHIN = 1.1
# A wording that is kept must be much cheaper than one that is compiled.
_KEPT_AT_LEAST = 5.0
_SECRET = "only-for-the-bench"


@dataclass(frozen=True)
class Asked:
    """How often each is measured."""

    rounds: int = 15

    @property
    def steps(self) -> int:
        """How often progress is told."""
        return self.rounds


def bench_checks(asked: Asked, progress: Callable[[int], object]) -> list[Figure]:
    """The figures of all of them."""
    with tempfile.TemporaryDirectory(prefix="checks") as folder:
        file = Path(folder) / "shop.db"
        store = Store(make_engine(f"sqlite+pysqlite:///{file}"))
        schema.upgrade(store.engine)
        crowd.add_crowd(store, 10, _SECRET)
        measured = {**_templates(), **_previews(store), **_passwords(), **_tokens(store, file)}
        found: dict[str, list[float]] = defaultdict(list)
        for one, _ in measured.values():
            one()
        for _ in range(asked.rounds):
            for name, (one, times) in measured.items():
                began = time.perf_counter()
                for _ in range(times):
                    one()
                found[name].append(1000 * (time.perf_counter() - began) / times)
            progress(1)
        store.close()
    return _figures({name: median(took) for name, took in found.items()})


# What is measured, and how often in a row.
_Measured = dict[str, tuple[Callable[[], object], int]]


def _templates() -> _Measured:
    """Every shipped text in English with its sample facts."""
    codes = [one.code for one in REASONS if one.code not in NOT_TO_BE_WORDED]
    facts = {code: sample_facts(code, "en") for code in codes}
    whole = {code: complete(code, facts[code]) for code in codes}
    plain = Environment(autoescape=False)
    kept = {code: plain.from_string(shipped("en", code)) for code in codes}
    return {
        RENDERED: (lambda: [render(code, "en", facts[code]) for code in codes], 1),
        JINJA: (lambda: [kept[code].render(whole[code]) for code in codes], 1),
        COMPILED: (lambda: [_compiled(shipped("en", code)).render(whole[code]) for code in codes], 1),
    }


def _compiled(source: str) -> Any:
    return Environment(autoescape=False, cache_size=0).from_string(source)


def _previews(store: Store) -> _Measured:
    """Of a wording that was never seen before, as a manager types it."""
    with store.read() as connection:
        text_id = outbox.texts_of_shop(connection, 1)[0]["id"]
    source, numbers = shipped("en", "due_work"), count(1)

    def look() -> object:
        own = f"{source} Ask for bay {next(numbers)}."
        return preview(store, 1, "due_work", "en", own, crowd.OPENS_AT, facts_of, text_id)

    return {PREVIEW: (look, 1)}


def _passwords() -> _Measured:
    said = "four plain words here"
    kept = passwords.hash_password(said)
    bare = PasswordHasher(
        time_cost=passwords.TIME_COST, memory_cost=passwords.MEMORY_KIB, parallelism=1, type=Type.ID
    )  # fmt: skip
    return {
        PASSWORD: (lambda: passwords.is_right(said, kept), 1),
        ARGON: (lambda: bare.verify(kept, said), 1),
        NOBODY: (lambda: passwords.is_right(said, None), 1),
    }


def _tokens(store: Store, file: Path) -> _Measured:
    token = new_token(store, 1, "the bench", crowd.OPENS_AT, "the bench")
    link = sqlite3.connect(file)

    def bare() -> object:
        asked = (hashlib.sha256(token.encode()).hexdigest(),)
        return link.execute("SELECT * FROM api_tokens WHERE token_hash = ?", asked).fetchone()

    return {TOKEN: (lambda: standing_token(store, token), 50), BARE_TOKEN: (bare, 50)}


def _figures(took: dict[str, float]) -> list[Figure]:
    texts = len([one for one in REASONS if one.code not in NOT_TO_BE_WORDED])
    each = {name: 1000 * texts / took[name] for name in (RENDERED, JINJA, COMPILED)}
    return [
        beside(RENDERED, each[RENDERED], 0, "/s"),
        beside(JINJA, each[JINJA], 0, "/s"),
        beside(COMPILED, each[COMPILED], 0, "/s"),
        beside(f"{RENDERED}, of {JINJA}", each[RENDERED] / each[JINJA], 2),
        at_least(f"{RENDERED}, of {COMPILED}", each[RENDERED] / each[COMPILED], _KEPT_AT_LEAST, 1),
        at_most(PREVIEW, took[PREVIEW], _PREVIEW_WITHIN, 1, " ms"),
        beside(PASSWORD, took[PASSWORD], 1, " ms"),
        beside(ARGON, took[ARGON], 1, " ms"),
        at_most(f"{PASSWORD}, of {ARGON}", took[PASSWORD] / took[ARGON], _PASSWORD_WITHIN, 2),
        within(f"{NOBODY}, of {PASSWORD}", took[NOBODY] / took[PASSWORD], 1.0, _NOBODY_APART, 2),
        beside(TOKEN, 1000 / took[TOKEN], 0, "/s"),
        beside(BARE_TOKEN, 1000 / took[BARE_TOKEN], 0, "/s"),
        beside(f"{TOKEN}, of {BARE_TOKEN}", took[BARE_TOKEN] / took[TOKEN], 2),
    ]
