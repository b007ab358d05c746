"""People, their phones and cars: four tables in the store, four plain values here."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

ROLES_OF_TIES = ("owner", "driver", "payer")


@dataclass(frozen=True)
class Phone:
    """A number. `zones` are all IANA zones that the number may be in, worked out at entry; () = unknown.

    `line` is what `phone_numbers` reads, "fixed_voip" by a person's word, or "unknown"; `bad_because` says why it
    cannot be texted, `held_because` why a person looks before anything we start leaves: it may be somebody else's.
    """

    id: int
    number: str
    zones: tuple[str, ...] = ()
    line: str = "unknown"
    language: str | None = None
    bad_because: str | None = None
    held_because: str | None = None


@dataclass(frozen=True)
class Person:
    """A person. `paused_until`: an advisor paused the invites; `is_deceased` turns every text off."""

    id: int
    code: str
    name: str | None = None
    language: str | None = None
    paused_until: date | None = None
    is_deceased: bool = False
    is_fleet: bool = False


@dataclass(frozen=True)
class Tie:
    """A person owns, drives or pays for a car from a day to a day."""

    person_id: int
    vehicle_id: int
    role: str
    from_on: date | None
    to_on: date | None
    ended_because: str | None = None
