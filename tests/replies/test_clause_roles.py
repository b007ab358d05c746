"""A time told as the reason, or left behind, is no visit time (contract: times are what the customer can make)."""

from __future__ import annotations

import pytest

from followup.core.replies.clause_roles import Role, clauses_of
from followup.core.replies.plain import make_plain
from tests.replies.reading import avoided, read, times

OWN_DAY = [
    ("confirm", "plumber is coming thursday can i come friday at 10 instead", ["3-6 10:00"]),
    ("confirm", "can we make it 11 instead, my bus doesnt get in til 10:30", ["3-5 11:00"]),
    ("visit", "I was going to say Monday but my mom has her eye thing that day so Tuesday at 10", ["3-10 10:00"]),
    ("visit", "maybe monday no wait i have a dentist thing monday so lets say tuesday at 11", ["3-10 11:00"]),
    ("booked", "scrap thursday and lets do wednesday at 10", ["3-11 10:00"]),
    ("visit", "i teach mornings so thursday at 2", ["3-5 14:00"]),
    ("visit", "friday 8:15, i gotta be at work by 10", ["3-6 08:15"]),
    ("confirm", "me cambiaron el turno al jueves, podemos dejarlo para el martes a las 9", ["3-10 09:00"]),
    ("visit", "el jueves mi hija tiene partido a las 4, pero a las 2 puedo", ["3-5 14:00"]),
    ("visit", "jueves a las 8, a las 10 entro a trabajar", ["3-5 08:00"]),
    ("visit", "el martes tengo junta en la tarde pero en la mañana puedo", ["3-10 07:30-12:00"]),
    ("slot", "the later one, i have a class in the morning", ["3-6 14:00"]),
    ("slot", "I have clients until 2 both days. Could I do 2:30 on Thursday?", ["3-5 14:30"]),
    ("slot", "la del viernes porque el jueves llega mi suegra", ["3-6 14:00"]),
    ("visit", "i work til 2 on mon so maybe like 245", ["3-9 14:45"]),
    ("visit", "anytime after i get the twins to daycare at 8:30 monday", ["3-9 08:30-18:00"]),
    ("visit", "estoy ocupado hasta la 1 y de ahi libre el jueves", ["3-5 13:00-18:00"]),
    ("visit", "mon or tues next week, tues only after 2", ["3-9", "3-10 14:00-18:00"]),
    ("visit", "puedo lunes o miercoles, de preferencia miercoles", ["3-11", "3-9"]),
    ("visit", "i work from home mondays and wednesdays so either of those", ["3-9", "3-11"]),
]


@pytest.mark.parametrize(("asked_in", "text", "expected"), OWN_DAY)
def test_a_time_of_the_own_day_is_no_visit_time(asked_in: str, text: str, expected: list[str]) -> None:
    out = read(text, asked_in)
    assert (times(out), avoided(out)) == (expected, [])


def test_alone_such_a_time_stands() -> None:
    assert times(read("I have the car Thursday morning")) == ["3-5 07:30-12:00"]


def test_the_roles_of_clauses() -> None:
    plain = make_plain("monday i cant, my wife has the car tuesday, was thinking friday but could we do saturday", None)
    assert [one.role for one in clauses_of(plain.text)] == [Role.RULED_OUT, Role.OWN, Role.LEFT, Role.ASK]
