"""A planted bad text for each rule is caught, and its honest neighbor is not."""

import re
from collections.abc import Iterator, Mapping

import pytest

from followup.core.text import REASONS
from followup.core.wording_checks import Fault, check_wording, stopping
from followup.core.wording_checks.never import NEVER, Never
from followup.core.wording_facts import FactValue, sample_facts
from followup.wording import render, review, shipped

# For each rule sentences that break it; each alternative of its pattern is broken by one (a test below sees to it).
PLANTED_EN = {
    "safe": ["It is safe.", "Drive safely.", "It makes your trip safer.", "For your safety.", "It is unsafe."],
    "danger": [
        "A danger to you.",
        "That is dangerous.",
        "It is a hazard.",
        "A hazardous state.",
        "No risks.",
        "So risky.",
    ],
    "legal": ["It is legal.", "That is illegal.", "It is unlawful.", "It is against the law."],
    "pass or fail": ["It will pass.", "It failed."],
    "guaranteed": ["Guaranteed.", "A certified shop.", "We certify it.", "A perfect job."],
    "good until": [
        "They are good until fall.",
        "That is good for another year.",
        "They will last.",
        "They should last.",
        "It lasts until fall.",
        "There is no need to come.",
        "You do not need to come.",
    ],
    "you must": ["You must come.", "You have to come.", "You need to come.", "It must be done."],
    "urgent": [
        "It is urgent.",
        "Your last chance.",
        "Hurry.",
        "Act now.",
        "Final notice.",
        "Don't miss it.",
        "A limited time.",
    ],
    "chance": [
        "It is 80% worn.",
        "Some percent of it.",
        "The chance is small.",
        "The odds are small.",
        "A probability.",
        "It will probably go.",
        "It is likely.",
    ],
    "price": ["Only $49.", "It costs 49 dollars.", "At half price.", "A discount.", "A coupon."],
    "covered": ["You are covered.", "Your coverage.", "It is under warranty.", "Your insurance pays."],
    "diagnosed": ["We diagnosed it.", "Our diagnosis.", "The problem is the pump.", "The cause is the pump."],
    "ability to stop": [
        "It harms your ability to stop.",
        "A longer stopping distance.",
        "It may not stop.",
        "You lose control.",
    ],
    "you declined": ["Work that was declined.", "You refused it.", "You said no.", "You turned it down."],
    "plate or VIN": ["The one with plate ABC.", "By license number.", "By its VIN."],
    "fine": ["All is fine.", "It is in good shape.", "It is like new."],
    "CANCEL": ["Reply CANCEL to call it off."],
    "cap": ["Please open the cap and look."],
}
PLANTED_ES = {
    "safe": ["Es seguro.", "Por su seguridad.", "Seguramente.", "Es inseguro."],
    "danger": ["Un peligro.", "Es peligroso.", "Un riesgo.", "Es riesgoso.", "Es arriesgado."],
    "legal": ["Es legal.", "Es ilegal.", "Va contra la ley."],
    "pass or fail": ["No pasa la prueba.", "Fue aprobado.", "Fue reprobado.", "El freno falla."],
    "guaranteed": ["Con garantía.", "Garantizado.", "Certificado.", "Queda perfecto."],
    "good until": ["Buenas hasta julio.", "Durará.", "Dura hasta julio.", "No es necesario venir."],
    "you must": ["Usted debe venir.", "Deberá venir.", "Tiene que venir.", "Es obligatorio."],
    "urgent": [
        "Es urgente.",
        "Urgentemente.",
        "Con urgencia.",
        "Su última oportunidad.",
        "Apresúrese.",
        "No se lo pierda.",
        "Solo por hoy.",
    ],
    "chance": ["Gastado al 80%.", "Un tanto por ciento.", "La probabilidad es poca.", "Es probable."],
    "price": ["Solo $49.", "Cuesta 49 dólares.", "A mitad de precio.", "Un descuento.", "Un cupón."],
    "covered": ["Está cubierto.", "Eso lo cubre.", "Su cobertura.", "Va en garantía."],
    "diagnosed": ["Un diagnóstico.", "El problema es la bomba.", "La causa es la bomba."],
    "ability to stop": ["Menos capacidad de frenar.", "La distancia de frenado.", "Puede perder el control."],
    "you declined": ["Usted rechazó eso.", "Usted declinó eso.", "Usted dijo que no."],
    "plate or VIN": ["El de placas ABC.", "Su patente.", "Su matrícula.", "Por su VIN.", "Por número de serie."],
    "fine": ["Está bien.", "En buen estado.", "Como nuevo.", "Todo bien."],
    "CANCEL": ["Responda CANCELAR para otra cosa."],
    "cap": ["Abra la tapa y mire."],
}
PLANTED = {"en": PLANTED_EN, "es": PLANTED_ES}


def check(source: str, reason: str = "decline_noted", language: str = "en", **others: FactValue) -> list[Fault]:
    """The faults of a shop's own wording, with its sample facts and `others` in their place."""
    facts = {**sample_facts(reason, language), **others}
    return check_wording(render(reason, language, facts, source), reason, language, facts)


def rules(faults: list[Fault]) -> set[str]:
    return {fault.rule for fault in faults}


@pytest.mark.parametrize("language", PLANTED)
@pytest.mark.parametrize("never", NEVER, ids=lambda never: never.rule)
def test_what_no_text_says_is_caught(never: Never, language: str) -> None:
    for sentence in PLANTED[language][never.rule]:
        faults = check(f"{{{{ shop }}}}: {sentence} {{{{ car }}}} {{{{ shop_phone }}}}", language=language)
        assert never.rule in rules(faults), sentence
        assert any(fault.is_stopping and never.instead in fault.says for fault in faults)


def _alternatives(pattern: re.Pattern[str]) -> Iterator[str]:
    """The alternatives of a list of words, split where a bar stands outside of all parentheses and brackets."""
    inner = pattern.pattern.removeprefix(r"(?<!\w)(?:").removesuffix(r")(?!\w)")
    depth, start = 0, 0
    for at, char in enumerate(inner):
        depth += (char in "([") - (char in ")]")
        if char == "|" and depth == 0:
            yield inner[start:at]
            start = at + 1
    yield inner[start:]


@pytest.mark.parametrize("language", PLANTED)
@pytest.mark.parametrize("never", NEVER, ids=lambda never: never.rule)
def test_every_alternative_of_a_rule_has_its_planted_break(never: Never, language: str) -> None:
    planted = " ".join(PLANTED[language][never.rule])
    for alternative in _alternatives(never.en if language == "en" else never.es):
        assert re.search(rf"(?<!\w)(?:{alternative})(?!\w)", planted, re.IGNORECASE), alternative


@pytest.mark.parametrize(
    "honest",
    ["Your passenger side tire.", "Come by for a compass.", "Our safeguard desk.", "The platelet.", "We plan it.",
     "It may be due around July.", "We look forward to it.", "Refine it.", "Approve a price."],
)  # fmt: skip
def test_words_that_only_look_alike_are_left_alone(honest: str) -> None:
    words = rules(check(f"{{{{ shop }}}}: {honest} {{{{ car }}}} {{{{ shop_phone }}}}"))
    assert not words & {never.rule for never in NEVER}


def test_a_shop_a_customer_and_a_car_may_be_called_what_they_like() -> None:
    named = {"shop": "Perfect Pass Brake & Safe Tire", "who": "Legal", "car": "dangerous fine beast"}
    assert check(shipped("en", "car_ready"), "car_ready", **named) == []
    # But the wording around such names is still read.
    assert "safe" in rules(check("{{ shop }}: {{ car }} is safe. {{ shop_phone }}", "car_ready", **named))


def test_a_price_may_stand_in_the_shops_price_text_and_in_a_persons_own_words_only() -> None:
    assert check(shipped("en", "price"), "price", price_text="Pads are $220 an axle.") == []
    assert (
        check(shipped("en", "from_a_person"), "from_a_person", message="Pads are $220 an axle, (312) 555-0147.") == []
    )
    assert "price" in rules(check("{{ shop }}: Pads for your {{ car }} are $220. {{ shop_phone }}", "price"))


def test_free_stands_only_with_what_and_how_much() -> None:
    whole = "{{ shop }}: {% for service in services %}{{ service.name }}, {{ service.amount }}, {% endfor %}"
    ends = " for your {{ car }}. Reply STOP to stop texts."
    assert check(whole + "free" + ends, "free_service") == []
    assert "free" in rules(check("{{ shop }}: A free top-off" + ends, "free_service"))
    assert "free" in rules(
        check("{{ shop }}: {% for service in services %}{{ service.name }}{% endfor %} free" + ends, "free_service")
    )
    assert "free" in rules(check("{{ shop }}: A wash at no charge for your {{ car }}.", "decline_noted"))


@pytest.mark.parametrize(
    ("language", "word"),
    [
        ("en", "free"), ("en", "no charge"), ("en", "no cost"), ("en", "without charge"), ("en", "on the house"),
        ("en", "complimentary"), ("es", "gratis"), ("es", "gratuito"), ("es", "sin costo"), ("es", "sin cargo"),
        ("es", "regalado"), ("es", "de cortesía"),
    ],
)  # fmt: skip
def test_all_words_for_free_are_known(language: str, word: str) -> None:
    assert "free" in rules(check(f"{{{{ shop }}}}: {word} {{{{ car }}}}", language=language))


@pytest.mark.parametrize(
    ("link", "is_own"),
    [("https://quill-lane.example.com/book", True), ("quill-lane.example.com", True),
     ("www.quill-lane.example.com", True), ("https://my.quill-lane.example.com/x?a=b", True),
     ("https://example.com", False), ("https://quill-lane.example.com.evil.net/", False), ("bit.ly/abc", False),
     ("https://quill-lane.example.com@evil.net/", False),
        ("https://quill-lane.example.com:x@evil.net/", False),
        ("https://evil.net\\@quill-lane.example.com", False),
        ("https://evil.net\\.quill-lane.example.com", False),
        ("https://quill-lane.example.com:8443/x", True), ("http://evil.net/quill-lane.example.com", False),
     ("https://notquill-lane.example.com", False), ("HTTPS://EVIL.NET", False)],
)  # fmt: skip
def test_links_lead_to_the_shops_own_domain(link: str, is_own: bool) -> None:
    facts = sample_facts("where", "en") | {"link": link}
    text = render("where", "en", facts)
    found = check_wording(text, "where", "en", facts, own_domain="quill-lane.example.com")
    assert ("link" in rules(found)) is not is_own
    assert "link" in rules(check_wording(text, "where", "en", facts))


def test_another_persons_name_is_caught() -> None:
    facts = sample_facts("car_ready", "en")
    text = render(
        "car_ready", "en", facts, "{{ shop }}: Hi {{ who }}, tell Morgan that your {{ car }} is ready. {{ shop_phone }}"
    )
    assert "second name" in rules(check_wording(text, "car_ready", "en", facts, other_names=["Morgan"]))
    assert "second name" not in rules(check_wording(text, "car_ready", "en", facts, other_names=["Organ", "Dana"]))


ALWAYS = [
    ("shop first", "due_work", "Hi from {{ shop }}, your {{ car }} waits. {{ shop_phone }} Reply STOP."),
    ("how to stop", "due_work", "{{ shop }}: Your {{ car }} waits. {{ shop_phone }}"),
    ("how to stop", "due_work", "{{ shop }}: Your {{ car }} waits. {{ shop_phone }} Please stop by."),
    ("phone number", "due_work", "{{ shop }}: Your {{ car }} waits. Reply STOP to stop texts."),
    ("phone number", "decline_noted", "{{ shop }}: New brakes for your {{ car }}, then."),
    ("phone number", "duration", "{{ shop }}: Tires take an hour."),
    ("car", "due_work", "{{ shop }}: Your car waits. {{ shop_phone }} Reply STOP to stop texts."),
    ("car", "decline_noted", "{{ shop }}: We leave your car for now."),
    (
        "full date",
        "confirmation",
        "{{ shop }}: Your {{ car }} is booked. No paid work starts before a price. {{ shop_phone }}",
    ),
    ("full date", "change_noted", "{{ shop }}: We noted {{ time }}."),
    ("must say", "confirmation", "{{ shop }}: {{ car }} on {{ time }}. {{ shop_phone }}"),
    ("must say", "opted_in", "{{ shop }}: Texts are on, up to 8 a year. Reply HELP or STOP. {{ shop_phone }}"),
    ("must say", "help", "{{ shop }}: Call {{ shop_phone }}."),
    ("must say", "judgment", "{{ shop }}: Please call {{ shop_phone }}."),
    ("number with its day", "judgment", "{{ shop }}: We measured 4 mm. We cannot judge that by text. {{ shop_phone }}"),
    ("number with its day", "judgment", "{{ shop }}: It was 5/32. We cannot judge that by text. {{ shop_phone }}"),
    ("what is ahead", "later_noted", "{{ shop }}: We will ask in July."),
    ("what is ahead", "later_noted", "{{ shop }}: We will ask in May."),
]


@pytest.mark.parametrize(("rule", "reason", "source"), ALWAYS)
def test_what_every_text_says_is_missed_where_it_lacks(rule: str, reason: str, source: str) -> None:
    assert rule in rules(check(source, reason))


@pytest.mark.parametrize(
    ("rule", "reason", "source"),
    [
        ("how to stop", "due_work", "{{ shop }}: Su {{ car }} espera. {{ shop_phone }}"),
        ("phone number", "decline_noted", "{{ shop }}: Frenos nuevos, pues."),
        ("car", "decline_noted", "{{ shop }}: Dejamos su auto por ahora."),
        ("must say", "confirmation", "{{ shop }}: {{ car }} el {{ time }}. {{ shop_phone }}"),
        (
            "number with its day",
            "judgment",
            "{{ shop }}: Vimos 4 mm. No podemos juzgar eso por mensaje. {{ shop_phone }}",
        ),
        ("what is ahead", "later_noted", "{{ shop }}: Le escribimos en julio."),
    ],
)
def test_the_same_in_spanish(rule: str, reason: str, source: str) -> None:
    assert rule in rules(check(source, reason, "es"))


def test_a_number_with_its_day_and_a_month_that_is_only_maybe_pass() -> None:
    source = "{{ shop }}: 4 mm on March 2. It may be due around May. We cannot judge that by text. {{ shop_phone }}"
    assert not rules(check(source, "judgment")) & {"number with its day", "what is ahead"}


def test_a_hard_text_is_sent_back_in_both_languages() -> None:
    hard = "{{ shop }}: Preventative maintenance considerations necessitate immediate rehabilitation appointments."
    assert "reading grade" in rules(check(hard))
    hard = "{{ shop }}: Consideraciones preventivas imprescindibles recomiendan inmediatamente rehabilitaciones."
    assert "reading grade" in rules(check(hard, language="es"))


def test_names_and_dates_do_not_make_a_text_hard() -> None:
    named = {"shop": "Constantinopolitan Automotive Rehabilitation", "car": "international harvester combination"}
    assert (
        check(shipped("en", "confirmation"), "confirmation", **named, time="Wednesday, September 23 at 11:45 AM") == []
    )


def test_a_text_that_is_too_long_is_sent_back() -> None:
    source = "{{ shop }}: " + "We will see you then. " * 30
    assert "length" in rules(check(source))
    assert "length" not in rules(check("{{ shop }}: See you then."))


def test_a_strange_character_is_a_hint_and_a_spanish_accent_is_none() -> None:
    faults = check("{{ shop }}: See you then ☺.")
    assert rules(faults) == {"characters"}
    assert stopping(faults) == []
    assert check("{{ shop }}: Nos vemos el sábado.", language="es") == []
    assert rules(check("{{ shop }}: Nos vemos ☺.", language="es")) == {"characters"}


def test_what_a_person_writes_is_not_graded_but_read_for_promises() -> None:
    def faults(message: str) -> set[str]:
        return rules(check(shipped("en", "from_a_person"), "from_a_person", message=message))

    assert faults("Administrative complications necessitate rescheduling.") == set()
    assert faults("It is safe to drive.") == {"safe"}
    assert faults("Your brakes can wait.") == {"phone number"}


@pytest.mark.parametrize("language", PLANTED)
def test_review_finds_in_a_wording_what_only_its_bare_facts_show(language: str) -> None:
    """The shop's name first only where the customer's name is known: seen with the needed facts alone."""
    source = shipped(language, "decline_noted").replace("{{ shop }}", "{% if who %}{{ shop }}{% else %}X{% endif %}")
    assert "shop first" in rules(review(source, "decline_noted", language))


def test_all_reasons_are_held_to_the_phone_number_that_they_need() -> None:
    for reason in REASONS:
        if reason.needs_phone_number:
            facts: Mapping[str, FactValue] = sample_facts(reason.code, "en")
            text = render(reason.code, "en", facts).replace(str(facts["shop_phone"]), "")
            assert "phone number" in rules(check_wording(text, reason.code, "en", facts)), reason.code
