"""Serves pages to the browser on this machine alone, by the same server that the program uses."""

from __future__ import annotations

import threading
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

from flask import Flask
from waitress.server import create_server


@contextmanager
def served(app: Flask) -> Iterator[str]:
    """The pages' address, like `http://127.0.0.1:41234`, while the block lasts."""
    server: Any = create_server(app, host="127.0.0.1", port=0, threads=4)
    thread = threading.Thread(target=server.run, daemon=True)
    thread.start()
    try:
        yield f"http://127.0.0.1:{server.effective_port}"
    finally:
        server.close()
        thread.join(5)
