"""Replies that are dangerous to misread, many of each kind: no stop, symptom, yes or no may be lost or made up.

Source: the design's list of replies that are dangerous to misread (its own
are the first of each kind), common practice.
"""

from __future__ import annotations

import pytest

from tests.replies.reading import read

# Symptoms that hold a keyword of ours, or look like something else.
SYMPTOMS = (
    "car just quit on me", "it died on the highway", "wont start", "help im stuck", "cant stop in time",
    "la llanta está baja", "no arranca", "no para bien", "me quedé parado", "fine, but it still shakes",
    "engine quit at the light", "HELP my brakes went out", "it keeps quitting on me",
    "the brakes dont stop the car good", "stop light wont turn off on my dash", "cant get it to stop without pumping",
    "starts then dies", "start button does nothing, car wont turn on", "pedal goes to the end of the floor",
    "it wont stop squealing", "it wont stop leaking", "help it wont start", "info light and a red triangle are on",
    "se baja solo el pedal", "la goma esta baja otra vez", "salio humo del cofre", "ayuda se me apago el carro",
    "no puedo parar bien el carro", "alto, se me fue el freno", "me quede botado",
    "yes tuesday but today it is overheating", "no thanks but it pulls left now",
    "thanks! also theres a burning smell", "ok see you then, oh and a tire is flat",
    "all good except the brakes grind", "good except for the shaking", "cant complain but the brakes are squeaky",
    "no worries its just smoking a little",
)  # fmt: skip
# What holds a keyword of ours, or a word of a symptom, harmlessly.
NEITHER_STOP_NOR_SYMPTOM = (
    "can i stop by", "ill stop by after lunch thursday", "stopped by but you were closed", "i quit smoking last year",
    "quit my job so money is tight", "end of the month is better", "weekend works", "by the end of the day friday",
    "dont stop the reminders, i like them", "no need to stop the texts", "please dont stop texting",
    "bus stop is right by your shop?", "is there a stop sign at your corner", "cancel culture lol",
    "the end of march", "non stop busy here", "unstoppable lol", "stop worrying ill come friday",
    "help yourself to a time next week", "start of next week works", "can we start with the oil change",
    "info about the price please", "puedo parar por ahi el viernes", "al salir del trabajo", "la semana que termina",
    "cuando salga paso", "ya mero salgo del trabajo, paso mañana", "me quede en casa hoy, mañana si",
    "baja el precio y voy", "esta baja la temperatura hoy, mejor mañana", "hace frio, mejor el lunes",
    "no smoke, no noise, all good", "my phone died sorry, friday works", "my phone is dead most days, call after 5",
    "smoke shop next to you right?", "i was shaking my head at that price", "its a steal, book me friday",
    "shake on it, friday at 9", "i pulled a muscle, later please", "traffic is killing me, friday instead",
    "dead tired, next week", "my kid has a flat tire on his bike lol", "fire away, what times",
    "thats a smoking deal, thursday",
)  # fmt: skip
# (context, text, leading meaning).
LEADING = (
    ("visit", "I'm good", "decline"), ("visit", "I'm good for Tuesday", "propose"),
    ("confirm", "no worries", "thanks"), ("visit", "why not", "accept"), ("after_visit", "can't complain", "accept"),
    ("visit", "all set", "decline"), ("visit", "im good thanks", "decline"),
    ("visit", "were good for friday at 9", "propose"), ("confirm", "im good", "accept"),
    ("confirm", "we're all set", "accept"), ("confirm", "all good for thursday", "accept"),
    ("visit", "no problem", "accept"), ("visit", "no doubt", "accept"), ("visit", "not a bad idea", "accept"),
    ("visit", "cant say no to that", "accept"), ("visit", "i dont see why not", "accept"),
    ("visit", "dont mind if i do", "accept"), ("visit", "yeah no", "decline"), ("visit", "yeah no thanks", "decline"),
    ("visit", "no yeah", "accept"), ("visit", "sure, when pigs fly", "decline"), ("visit", "yeah right", "decline"),
    ("visit", "as if", "decline"), ("visit", "lol no", "decline"), ("visit", "ya no", "decline"),
    ("visit", "ya no gracias", "decline"), ("visit", "como no", "accept"), ("visit", "por que no", "accept"),
    ("visit", "ni modo, agendeme", "accept"), ("visit", "no hay problema, agendeme", "accept"),
    ("confirm", "no hay problema", "accept"), ("confirm", "ahi estare sin falta", "accept"),
    ("confirm", "i wont miss it", "accept"), ("confirm", "cant wait", "accept"),
    ("confirm", "wouldnt miss it", "accept"), ("confirm", "no change, see you then", "accept"),
    ("confirm", "nothing has changed", "accept"), ("confirm", "dont cancel, ill be there", "accept"),
    ("confirm", "please dont cancel my appointment", "accept"), ("confirm", "no cancelen, si voy", "accept"),
    ("confirm", "yes cancel it", "cancel"), ("confirm", "ok cancel the appointment please", "cancel"),
    ("confirm", "thanks but i need to cancel", "cancel"), ("confirm", "cancel. also stop texting me", "stop"),
    ("visit", "not now, stop by later?", "later"), ("visit", "i hate to say it but no", "decline"),
    ("visit", "no longer have it, sold", "gone"), ("visit", "sold on getting it done, friday", "propose"),
    ("visit", "gone all week, try me next month", "later"),
    ("visit", "my number changed from 5 to 6 kids lol, saturday works", "propose"), ("confirm_stop", "yes", "stop"),
    ("confirm_stop", "no", "decline"), ("confirm_stop", "stop", "stop"), ("odometer", "stop", "stop"),
    ("car", "stop", "stop"), ("after_visit", "no complaints", "accept"),
    ("after_visit", "no problems at all", "accept"), ("after_visit", "no issues so far", "accept"),
    ("after_visit", "not bad", "accept"), ("after_visit", "couldnt be better", "accept"),
    ("after_visit", "couldnt be worse", "complaint"),
    ("after_visit", "great, if you like waiting 5 hours", "complaint"),
)  # fmt: skip
# (context, what the phone sends, leading meaning): our own words in it never count.
REACTIONS = (
    ("confirm", "Liked “See you Thursday at 9”", "accept"), ("visit", "Liked “Reply STOP to stop”", "unclear"),
    ("visit", "Le gustó “Responda ALTO para no recibir más”", "unclear"),
    ("visit", 'Reacted 👍 to "Your brakes are due"', "unclear"),
    ("confirm", 'Reacted 👎 to "See you Thursday"', "unclear"),
    ("confirm", "Loved “Elm Street: See you Thursday, March 5 at 9:00 AM. Reply CHANGE to change it.”", "unclear"),
    ("confirm", "Disliked “See you Thursday”", "unclear"), ("confirm", "Emphasized “See you Thursday”", "unclear"),
    ("visit", "Questioned “Your rear brakes were at 3 mm. Reply STOP to stop texts.”", "unclear"),
    ("visit", "Laughed at “We have openings, text a day”", "unclear"), ("visit", "Liked an image", "unclear"),
    ("visit", "Removed a like from “Reply STOP to stop”", "unclear"),
    ("visit", "Le encantó “Sus frenos hacen ruido”", "unclear"), ("visit", "Se rió de “Responda ALTO”", "unclear"),
    ("visit", "Reaccionó con ❤️ a “Responda ALTO”", "unclear"),
    ("confirm", "Reacted ❤️ to “See you Thursday at 9”", "unclear"),
)  # fmt: skip


@pytest.mark.parametrize("text", SYMPTOMS)
@pytest.mark.parametrize("asked_in", ["visit", "confirm", "slot"])
def test_a_symptom_in_any_words_is_one(text: str, asked_in: str) -> None:
    out = read(text, asked_in)
    assert "symptom" in out.meanings and out.handoff
    assert "resume" not in out.meanings and "help" not in out.meanings
    if not text.startswith("alto"):
        assert "stop" not in out.meanings


@pytest.mark.parametrize("text", NEITHER_STOP_NOR_SYMPTOM)
@pytest.mark.parametrize("asked_in", ["visit", "confirm"])
def test_harmless_words_are_neither_a_stop_nor_a_symptom(text: str, asked_in: str) -> None:
    assert {"stop", "symptom", "resume"}.isdisjoint(read(text, asked_in).meanings)


@pytest.mark.parametrize(("asked_in", "text", "leading"), LEADING)
def test_what_leads(asked_in: str, text: str, leading: str) -> None:
    assert read(text, asked_in).meanings[0] == leading


@pytest.mark.parametrize(("asked_in", "text", "leading"), REACTIONS)
def test_quoted_words_of_ours_never_count(asked_in: str, text: str, leading: str) -> None:
    out = read(text, asked_in)
    assert out.meanings == (leading,)
    assert out.certainty <= 0.6
    assert not out.times and out.odometer is None


def test_a_number_that_is_told_is_never_a_consent() -> None:
    for text in ("my new number is 312 555 0147", "text my wife at 312-555-0148", "mi numero es 312 555 0149"):
        assert "resume" not in read(text).meanings
