"""A promise that was broken."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Broken:
    """Which promise, and what happened."""

    promise: str
    says: str
