"""Booking requests: their states, moves and what they ask for."""

from __future__ import annotations

STATES = ("asked", "offered", "confirmed", "kept", "missed", "closed")
# A move keeps the old time until the new one is confirmed: it is a request of its own that names the one it replaces.
MOVES: dict[str, tuple[str, ...]] = {
    "asked": ("offered", "confirmed", "closed"),
    "offered": ("asked", "confirmed", "closed"),
    "confirmed": ("kept", "missed", "closed"),
    "kept": ("closed",),
    "missed": ("closed",),
    "closed": (),
}
# RFC 5545 STATUS of VEVENT.
ICALENDAR_STATUS = {
    "asked": "TENTATIVE",
    "offered": "TENTATIVE",
    "confirmed": "CONFIRMED",
    "kept": "CONFIRMED",
    "missed": "CONFIRMED",
    "closed": "CANCELLED",
}
PARTS = ("unknown", "not_needed", "in_stock", "order", "ordered")
PAYERS = ("customer", "warranty", "prepaid", "contract", "fleet", "insurance", "goodwill")


class WrongMove(Exception):
    """The booking request cannot go from this state to that one: look at it again, somebody was first."""


def check_move(old: str, new: str) -> None:
    """Raise `WrongMove` unless a request may go from `old` to `new`."""
    if new not in MOVES[old]:
        raise WrongMove(f"A booking request that is {old} cannot become {new}: look at it again, somebody was first.")
