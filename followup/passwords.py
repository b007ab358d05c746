"""Passwords: kept as argon2id hashes, and the rules for new ones.

Parameters: OWASP ASVS 5.0, 11.4.2: t = 2, m = 19 456 KiB, p = 1. Rules: ASVS 6.2: length only, no rules of
composition, none of the common ones. A hash costs some 20-50 ms and 19 MiB, so at most four run at once.
"""

from __future__ import annotations

import re
import threading
from functools import cache
from importlib.resources import files
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from argon2 import PasswordHasher

SHORTEST = 8
LONGEST = 128
AT_ONCE = 4
TIME_COST = 2
MEMORY_KIB = 19_456
_LOOK_ALIKES = str.maketrans("013457@$!", "oieastasi")
_ROWS = ("abcdefghijklmnopqrstuvwxyz", "qwertyuiop", "asdfghjkl", "zxcvbnm", "01234567890")
_running = threading.BoundedSemaphore(AT_ONCE)


@cache
def _hasher() -> PasswordHasher:
    from argon2 import PasswordHasher, Type

    return PasswordHasher(time_cost=TIME_COST, memory_cost=MEMORY_KIB, parallelism=1, type=Type.ID)


@cache
def _hash_of_nobody() -> str:
    return _hasher().hash("nobody has this password")


@cache
def common_passwords() -> frozenset[str]:
    """Passwords, or their beginnings, that are known to be used a lot; from memory."""
    lines = (files("followup") / "common_passwords.txt").read_text("utf-8").split()
    return frozenset(lines)


def hash_password(password: str) -> str:
    """The hash to keep, with its parameters and a new salt."""
    with _running:
        return _hasher().hash(password)


def is_right(password: str, kept: str | None) -> bool:
    """Whether the password fits the hash; takes as long where there is no account (`kept` None)."""
    from argon2.exceptions import InvalidHashError, VerificationError

    with _running:
        try:
            is_same = _hasher().verify(kept or _hash_of_nobody(), password)
        except (VerificationError, InvalidHashError):
            return False
    return is_same and kept is not None


def needs_new_hash(kept: str) -> bool:
    """Whether the hash was made with weaker parameters than today's."""
    return _hasher().check_needs_rehash(kept)


def why_not(password: str, *known_words: str) -> str | None:
    """Why a new password is refused, in words; None where it is good. `known_words`: the login, the shop's name."""
    if len(password) < SHORTEST:
        return f"Use at least {SHORTEST} characters."
    if len(password) > LONGEST:
        return f"Use at most {LONGEST} characters."
    if _is_common(password) or _is_a_row(password):
        return "This password is one of those that are tried first. Choose another, perhaps three or four plain words."
    plain = password.lower()
    if any(len(word) >= 3 and word.lower() in plain and len(plain) < len(word) + 6 for word in known_words):
        return "Do not build the password from your sign-in name or the shop's name."
    return None


def _is_common(password: str) -> bool:
    """In the list, as it is or without the digits and signs that are usually put behind or in place of letters."""
    lower = password.lower()
    bare = re.sub(r"[\W\d_]+$", "", lower)
    unmasked = lower.translate(_LOOK_ALIKES)
    bare_unmasked = re.sub(r"[\W\d_]+$", "", lower).translate(_LOOK_ALIKES)
    return not common_passwords().isdisjoint((lower, bare, unmasked, bare_unmasked))


def _is_a_row(password: str) -> bool:
    """One character again and again, or a run along the alphabet, the digits or a row of the keyboard."""
    lower = password.lower()
    if len(set(lower)) <= 2:
        return True
    return any(lower in row * 3 or lower in row[::-1] * 3 for row in _ROWS)
