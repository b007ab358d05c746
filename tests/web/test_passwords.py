"""Passwords: how they are kept, and which are refused. Source: OWASP ASVS 5.0, 6.2 and 11.4.2."""

from __future__ import annotations

import re
import threading
import time

import pytest
from argon2 import PasswordHasher, extract_parameters
from argon2.low_level import Type

from followup import passwords


def test_the_hash_is_argon2id_at_the_floor_of_the_standard_or_above() -> None:
    kept = extract_parameters(passwords.hash_password("green lamp on the bench"))
    # ASVS 5.0, 11.4.2: t=2 with m >= 19456 KiB, p=1 (or other pairs that are as dear).
    assert kept.type is Type.ID
    assert kept.time_cost >= 2
    assert kept.memory_cost >= 19_456
    assert kept.parallelism == 1
    assert kept.salt_len >= 16


def test_the_same_password_is_kept_differently_each_time() -> None:
    assert passwords.hash_password("green lamp") != passwords.hash_password("green lamp")


def test_right_and_wrong() -> None:
    kept = passwords.hash_password("Grüne Lampe 🔧 ")
    assert passwords.is_right("Grüne Lampe 🔧 ", kept)
    for wrong in ("Grüne Lampe 🔧", "grüne lampe 🔧 ", "", "x" * 1000):
        assert not passwords.is_right(wrong, kept)
    assert not passwords.is_right("anything", None)
    assert not passwords.is_right("anything", "not a hash")


def test_every_character_of_a_long_password_counts() -> None:
    # Some ways to keep passwords drop what follows byte 72; this one must not.
    kept = passwords.hash_password("a" * 120)
    assert not passwords.is_right("a" * 119, kept)


def test_a_hash_of_weaker_parameters_is_made_anew() -> None:
    weak = PasswordHasher(time_cost=1, memory_cost=8_192, parallelism=1).hash("green lamp")
    assert passwords.is_right("green lamp", weak)
    assert passwords.needs_new_hash(weak)
    assert not passwords.needs_new_hash(passwords.hash_password("green lamp"))


# The head of what leaks show as the most used, from memory; each must be refused whatever its length.
MOST_USED = [
    "123456789", "12345678", "password", "qwerty123", "qwertyuiop", "1234567890", "password1", "iloveyou",
    "abc12345", "11111111", "00000000", "1q2w3e4r5t", "sunshine", "princess", "football", "baseball", "superman",
    "trustno1", "12341234", "87654321", "qwertyui", "asdfghjk", "zxcvbnm1", "Password1!", "P@ssw0rd", "passw0rd1",
    "Welcome1", "Welcome123", "welcome2026", "Summer2026!", "winter2025", "letmein1", "letmein123", "administrator",
    "admin123", "Admin1234", "changeme1", "aaaaaaaa", "abababab", "abcdefgh", "99999999", "88888888", "1qaz2wsx",
    "qazwsxedc", "contraseña", "teamomucho", "mariposa1", "estrella1", "princesa1", "barcelona12", "jesuscristo",
]  # fmt: skip


@pytest.mark.parametrize("password", MOST_USED)
def test_a_much_used_password_is_refused(password: str) -> None:
    assert passwords.why_not(password)


# ASVS 6.2.5 and 6.2.9: no rules of composition, any character, at least 64 of them.
@pytest.mark.parametrize(
    "password",
    [
        "green lamp on the bench",
        "la grúa azul duerme",
        "qzkfpwmx",
        "x" * 63 + "yz",
        "48213907",
        "🔧🚗🌧️🌵🎷🧀🪁🐙",
        "tres tristes tigres 7",
    ],
)
def test_no_rules_of_composition(password: str) -> None:
    assert passwords.why_not(password) is None


def test_length() -> None:
    assert passwords.why_not("qzkfpwm")
    assert passwords.why_not("qzkf pw" + "m" * 121) is None
    assert passwords.why_not("qzkf pwx" + "m" * 121)


def test_not_from_the_sign_in_name() -> None:
    assert passwords.why_not("rosaline12", "rosaline")
    assert passwords.why_not("Elm Street Auto", "x1", "Elm Street Auto")
    assert passwords.why_not("rosaline walks along the river", "rosaline") is None


def test_the_list_is_long_and_clean() -> None:
    words = passwords.common_passwords()
    assert len(words) >= 700
    assert all(re.fullmatch(r"\S{3,20}", word) and word == word.lower() for word in words)


def test_at_most_four_are_looked_at_at_once(monkeypatch: pytest.MonkeyPatch) -> None:
    running, most, lock = 0, 0, threading.Lock()

    class Slow:
        """Stands in for the hasher, to count how many run."""

        def hash(self, password: str) -> str:
            nonlocal running, most
            with lock:
                running += 1
                most = max(most, running)
            time.sleep(0.02)
            with lock:
                running -= 1
            return password

    monkeypatch.setattr(passwords, "_hasher", Slow)
    threads = [threading.Thread(target=passwords.hash_password, args=("x",)) for _ in range(16)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert most == 4
