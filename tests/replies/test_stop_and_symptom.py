"""A stop or a symptom is never missed and never made up."""

from __future__ import annotations

import pytest

from tests.replies.reading import read

# 47 CFR 64.1200(a)(10): the words that revoke consent by any reasonable reading when texted back.
REVOCATION_WORDS = ("stop", "quit", "end", "revoke", "opt out", "cancel", "unsubscribe")
WRITTEN = ("{}", "{}.", "{}!!", " {} ", '"{}"', "please {}", "{} please", "PLEASE {}.", "pls {}", "{}, thanks", "{}\n")

STOPS = (
    "stop txting me",
    "STOP TEXTING ME!!!",
    "stop sending me these",
    "no more texts please",
    "take me off this list",
    "remove my number",
    "dont text me again",
    "do not contact me anymore",
    "i dont want these messages",
    "unsubscribe me pls",
    "leave me alone",
    "lose this number",
    "wrong number, stop texting",
    "who is this?? stop",
    "no thanks, stop",
    "i sold it. unsubscribe",
    "sick of these texts",
    "quit bugging me",
    "pls delete my number from ur system",
    "i want to opt out",
    "dont ever text this number",
    "i no longer consent to texts",
    "never text me again",
    "Stop\n\nSent from my phone",
    "alto!",
    "paren de mandar mensajes",
    "dejen de molestar",
    "ya no me escriban",
    "no quiero mas mensajes",
    "borren mi numero",
    "saquenme de la lista",
    "dejenme en paz",
    "quiero darme de baja",
    "no me manden nada mas, basta",
    "ya basta de mensajes",
    "deje de escribirme",
)
NO_STOPS = (
    "can i stop by thursday",
    "ill stop in around 9",
    "my brakes barely stop",
    "it wont stop shaking",
    "car doesnt stop right",
    "cancel my tuesday",
    "at the end of the day works",
    "by the end of the week",
    "dont stop texting me, i like the reminders",
    "how do i stop these",
    "the noise wont quit",
    "car just quit on me",
    "i quit my job so cant afford it now",
    "end of march",
    "stop light is out",
    "non stop grinding noise",
    "do i need to stop driving it?",
    "no para bien",
    "puedo parar por ahi el jueves",
    "al salir del trabajo",
    "baja el aire de la llanta",
    "la llanta esta baja",
    "puedo pasar al final del dia",
    "voy a salir tarde del trabajo",
    "quiero cancelar mi cita",
)
SYMPTOMS = (
    "brakes feel soft",
    "the pedal goes to the floor",
    "grinding noise when i brake",
    "steering wheel shakes on the highway",
    "pulls to the left",
    "smoke from the hood",
    "leaking something under the car",
    "red light came on",
    "check engine light is on",
    "theres a bulge in my tire",
    "got a flat",
    "nail in my tire",
    "wont start",
    "car just quit on me",
    "it died on the highway",
    "help im stuck on the side of the road",
    "cant stop in time",
    "temp gauge is in the red",
    "smells like gas",
    "it still makes that noise even tho it went away for a bit",
    "yes tuesday. also the brakes squeal",
    "fine, but it still shakes",
    "headlights are dim",
    "dash went dead",
    "steering feels heavy",
    "wheel is wobbling",
    "la llanta está baja",
    "no arranca",
    "no para bien",
    "me quedé parado",
    "el pedal se va al fondo",
    "hace ruido al frenar",
    "vibra el volante",
    "se jala a la derecha",
    "sale humo del motor",
    "huele a gasolina",
    "se prendio la luz roja",
    "tira aceite",
    "se calienta mucho",
    "se me poncho la llanta",
    "se siente floja la direccion",
    "no frena bien",
)
NO_SYMPTOMS = (
    "no noise at all",
    "no leaks no noises, all good",
    "the noise was fixed",
    "they fixed the leak already",
    "my wipers squeak",
    "can you check the brakes",
    "how much for brakes",
    "tires are fine",
    "brakes were done last month",
    "no warning lights",
    "thursday at 9 for the brakes",
    "is the brake job covered",
    "sounds good",
    "sounds like a plan",
    "shake on it, thursday",
    "stuck at work til 5",
    "stuck in traffic",
    "i pulled my back so cant come",
    "start texting me again",
    "no hay ruidos",
    "cuanto cuestan los frenos",
    "ya arreglaron el ruido",
    "los limpiaparabrisas rechinan",
    "todo bien con los frenos",
    "no tiene fugas",
    "suena bien",
)


@pytest.mark.parametrize("word", REVOCATION_WORDS)
@pytest.mark.parametrize("written", WRITTEN)
@pytest.mark.parametrize("asked_in", ["visit", "slot", "confirm", "nothing", "odometer", "after_visit"])
def test_the_revocation_words_stop_in_any_case(word: str, written: str, asked_in: str) -> None:
    for shown in (word, word.upper(), word.title()):
        assert read(written.format(shown), asked_in).meanings[0] == "stop"


@pytest.mark.parametrize("text", STOPS)
def test_a_stop_is_never_missed(text: str) -> None:
    out = read(text)
    assert out.meanings[0] == "stop"
    assert out.question is None


@pytest.mark.parametrize("text", NO_STOPS)
@pytest.mark.parametrize("asked_in", ["visit", "confirm"])
def test_a_stop_is_never_made_up(text: str, asked_in: str) -> None:
    assert "stop" not in read(text, asked_in).meanings


@pytest.mark.parametrize("text", SYMPTOMS)
@pytest.mark.parametrize("asked_in", ["visit", "confirm", "slot", "after_visit"])
def test_a_symptom_is_never_missed(text: str, asked_in: str) -> None:
    out = read(text, asked_in)
    assert out.meanings[0] == "symptom"
    assert out.handoff


@pytest.mark.parametrize("text", NO_SYMPTOMS)
def test_a_symptom_is_never_made_up(text: str) -> None:
    assert "symptom" not in read(text).meanings


# Source: the design's list of replies that are dangerous to misread.
DANGEROUS = (
    ("visit", "I'm good", "decline"),
    ("visit", "I'm good for Tuesday", "propose"),
    ("confirm", "no worries", "thanks"),
    ("visit", "why not", "accept"),
    ("after_visit", "can't complain", "accept"),
    ("visit", "fine, but it still shakes", "symptom"),
    ("visit", "help im stuck", "symptom"),
    ("visit", "wont start", "symptom"),
    ("confirm", "Liked “See you Thursday at 9”", "accept"),
    ("visit", "Liked “Reply STOP to stop”", "unclear"),
    ("visit", "Le gustó “Responda ALTO para no recibir más”", "unclear"),
    ("visit", 'Reacted 👍 to "Your brakes are due"', "unclear"),
    ("confirm", 'Reacted 👎 to "See you Thursday"', "unclear"),
)


@pytest.mark.parametrize(("asked_in", "text", "leading"), DANGEROUS)
def test_what_is_dangerous_to_misread(asked_in: str, text: str, leading: str) -> None:
    out = read(text, asked_in)
    assert out.meanings[0] == leading
    if "Liked" in text and leading == "accept":
        assert out.certainty <= 0.6
