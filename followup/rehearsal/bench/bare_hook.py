"""The least that a hook can be: Flask, one check of a signature, one row in SQLite; what ours is measured beside.

`python -m followup.rehearsal.bench.bare_hook PORT DATABASE ADDRESS TOKEN THREADS`
"""

from __future__ import annotations

import sqlite3
import sys
import threading

from flask import Flask, abort, request
from flask.typing import ResponseReturnValue
from twilio.request_validator import RequestValidator  # type: ignore[import-untyped]  # the package ships no types


def make_app(database: str, address: str, token: str) -> Flask:
    """The application: `POST /hooks/texts` keeps the fields under their id."""
    app, validator, own = Flask(__name__), RequestValidator(token), threading.local()
    with sqlite3.connect(database) as first:
        first.execute("PRAGMA journal_mode=WAL")
        first.execute("CREATE TABLE IF NOT EXISTS texts (id TEXT PRIMARY KEY, sender TEXT, body TEXT)")

    def connection() -> sqlite3.Connection:
        if not hasattr(own, "link"):
            own.link = sqlite3.connect(database, timeout=10, isolation_level=None)
            own.link.execute("PRAGMA synchronous=FULL")
        link: sqlite3.Connection = own.link
        return link

    @app.post("/hooks/texts")
    def receive() -> ResponseReturnValue:
        if not validator.validate(address, request.form, request.headers.get("X-Twilio-Signature", "")):
            abort(403)
        row = [request.form[name] for name in ("MessageSid", "From", "Body")]
        connection().execute("INSERT OR IGNORE INTO texts VALUES (?, ?, ?)", row)
        return "", 204

    return app


if __name__ == "__main__":
    from waitress import serve

    port, database, address, token, threads = sys.argv[1:]
    serve(make_app(database, address, token), host="127.0.0.1", port=int(port), threads=int(threads))
