"""What the pages ask of the house. `wiring.py` makes one; the pages never build a part themselves."""

from __future__ import annotations

from datetime import datetime
from typing import Any, Protocol

from flask import current_app

from followup.settings import Settings


class House(Protocol):
    """What `create_app` needs; wiring's house has more, which the pages reach by `house()`."""

    @property
    def settings(self) -> Settings:
        """The machine's settings."""

    @property
    def store(self) -> Any:
        """The database, handed on to workflows; pages never ask it themselves."""

    def now(self) -> datetime:
        """This instant, aware, UTC."""


def house() -> Any:
    """The house of the app that answers this request.

    Typed `Any`: what a page asks for is tried where the page is tested against the real house.
    """
    return current_app.extensions["followup_house"]
