"""What no text says, in either language, also in a shop's own wording.

Words are looked for in a text whose names were taken out before. Every alternative of every pattern is walked by the
tests with a planted break.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from followup.core.wording_checks.checked import CheckedText, Fault

# The one fixed phrase in which the word may stand, and only in the cautions.
CAUTION_PHRASE = {
    "en": re.compile(r"\bstop as soon as it is safe\b", re.IGNORECASE),
    "es": re.compile(r"\bdetenga el auto en cuanto sea seguro\b", re.IGNORECASE),
}


def _words(*alternatives: str) -> re.Pattern[str]:
    return re.compile(rf"(?<!\w)(?:{'|'.join(alternatives)})(?!\w)", re.IGNORECASE)


@dataclass(frozen=True)
class Never:
    """A rule with its pattern in each language; `instead` says in plain words what to do.

    `but_in` are the reasons whose texts may say it all the same.
    """

    rule: str
    instead: str
    en: re.Pattern[str]
    es: re.Pattern[str]
    but_in: tuple[str, ...] = ()


NEVER: tuple[Never, ...] = (
    Never(
        "safe",
        "Say what was measured and when, never that a car is safe or not.",
        _words("safe", "safely", "safer", "safety", "unsafe"),
        _words("segur[oa]s?", "seguridad", "seguramente", "insegur[oa]s?"),
    ),
    Never(
        "danger",
        "Say what was measured and when; do not frighten.",
        _words("dangers?", "dangerous(?:ly)?", "hazards?", "hazardous", "risks?", "risky"),
        _words("peligros?", "peligros[oa]s?", "riesgos?", "riesgos[oa]s?", "arriesgad[oa]s?"),
    ),
    Never(
        "legal",
        "Do not speak of the law.",
        _words("legal(?:ly)?", "illegal(?:ly)?", "unlawful", "against the law"),
        _words("legal(?:es|mente)?", "ilegal(?:es|mente)?", "contra la ley"),
    ),
    Never(
        "pass or fail",
        "Say what was measured and when, not that it passed or failed.",
        _words("pass(?:es|ed|ing)?", "fail(?:s|ed|ing|ure)?"),
        _words(
            "pas(?:a|ó|o|ar) la (?:inspecci[oó]n|prueba)",
            "aprobad[oa]s?",
            "reprob(?:ado|ada|ó|ar)",
            "fall(?:a|an|ó|ar|as|o|os)",
        ),
    ),
    Never(
        "guaranteed",
        "Promise nothing: leave the word out.",
        _words("guarantee[sd]?", "certified", "certify", "perfect(?:ly)?"),
        _words(
            "garant[ií]as?",
            "garantiz(?:a|amos|ado|ada|ar)",
            "certific(?:a|amos|ado|ada|ados|adas)",
            "perfect(?:o|a|os|as|amente)",
        ),
    ),
    Never(
        "good until",
        "Say “may be due around” and a month.",
        _words(
            "good until",
            "good for another",
            "will last",
            "should last",
            "lasts until",
            "no need to",
            "(?:don't|do not) need to",
        ),
        _words("buen[oa]s? hasta", "durar[aá]n?", "dura hasta", "no (?:es necesario|hace falta|necesita|tiene que)"),
    ),
    Never(
        "you must",
        "Invite, do not order: “would you like”.",
        _words("you must", "you have to", "you need to", "must be (?:done|replaced|fixed)"),
        _words("debes?", "deber[aá]", "tienes? que", "es obligatorio"),
    ),
    Never(
        "urgent",
        "Do not press: leave it out.",
        _words("urgent(?:ly)?", "last chance", "hurry", "act now", "final notice", "don't miss", "limited time"),
        _words(
            "urgentes?",
            "urgentemente",
            "urgencia",
            "[uú]ltima oportunidad",
            "apres[uú]rese",
            "no se lo pierda",
            "solo por hoy",
        ),
    ),
    Never(
        "chance",
        "Say “may” or “around” and a month, never a chance.",
        _words(
            r"\d+(?:\.\d+)?\s?(?:%|percent|per cent)",
            "percent",
            "chances?",
            "odds",
            "probability",
            "probably",
            "likely",
        ),
        _words(r"\d+(?:[.,]\d+)?\s?(?:%|por ciento)", "por ciento", "probabilidad(?:es)?", "probable(?:s|mente)?"),
    ),
    Never(
        "price",
        "Prices stand only in the shop's price text.",
        _words(r"[$€£]\s?\d[\d.,]*", r"\d[\d.,]*\s?(?:dollars?|usd|bucks)", "half price", "discounts?", "coupons?"),
        _words(
            r"[$€£]\s?\d[\d.,]*",
            r"\d[\d.,]*\s?(?:d[oó]lar(?:es)?|usd|pesos)",
            "mitad de precio",
            "descuentos?",
            "cup[oó]n(?:es)?",
        ),
        but_in=("from_a_person",),
    ),
    Never(
        "covered",
        "Who pays is told by a person, not by text.",
        _words("covered", "coverage", "under warranty", "insurance pays"),
        _words("cubiert[oa]s?", "cubren?", "cobertura", "en garant[ií]a"),
    ),
    Never(
        "diagnosed",
        "Say what was measured or seen, not what is wrong.",
        _words("diagnose[sd]?", "diagnosis", "the problem is", "the cause is"),
        _words("diagn[oó]stic(?:o|os|ado|ada|amos|ar)", "el problema es", "la causa es"),
    ),
    Never(
        "ability to stop",
        "Do not speak of what could happen on the road.",
        _words("your ability to stop", "stopping distance", "may not (?:be able to )?stop", "lose control"),
        _words("capacidad (?:de|para) (?:frenar|frenado|parar)", "distancia de frenado", "perder el control"),
    ),
    Never(
        "you declined",
        "Do not hold a no against the customer: leave it out.",
        _words("declined", "you refused", "you said no", "you turned (?:it )?down"),
        _words("rechaz(?:ó|o|ado|ada|aron)", "declin(?:ó|o|ado|ada|aron)", "usted dijo que no"),
    ),
    Never(
        "plate or VIN",
        "Name the car in the customer's words.",
        _words("plates?", "license number", "vin"),
        _words("placas?", "patente", "matr[ií]cula", "vin", "n[uú]mero de serie"),
    ),
    Never(
        "fine",
        "Nothing is fine that was not measured that day: give the number with its day.",
        _words(
            "(?:is|are|looks?|still) (?:all )?(?:fine|good|ok|okay|healthy)",
            "in good (?:shape|condition|order)",
            "like new",
        ),
        _words("est[aá]n? (?:muy )?bien", "en (?:buen estado|buenas condiciones)", "como nuev[oa]s?", "todo bien"),
        but_in=("from_a_person",),
    ),
    Never(
        "CANCEL",
        "Invite CHANGE: CANCEL alone would stop all texts.",
        _words(r"(?:reply|text|send|answer|write)\W+cancel"),
        _words(r"(?:responda|escriba|mande|env[ií]e|conteste)\W+cancelar?"),
    ),
    Never(
        "cap",
        "Never tell a customer to open anything under the hood.",
        _words(r"(?:open|remove|unscrew|take off|lift)\b[^.!?]*\b(?:cap|hood|lid)"),
        _words(r"(?:abra|abrir|quite|destape|levante)\b[^.!?]*\b(?:tapa|tap[oó]n|cofre|cap[oó])"),
    ),
)

FREE = {
    "en": _words("free", "no charge", "no cost", "without charge", "on the house", "complimentary"),
    "es": _words("gratis", "gratuit[oa]s?", "sin (?:costo|cargo)", "regalad[oa]s?", "de cortes[ií]a"),
}
_ENDINGS = "com|net|org|info|biz|shop|link|ly|io|co|us|mx|app|me|gl|site"
LINK = re.compile(
    rf"(?:https?://|www\.)\S+|(?<![\w@.])(?:[a-z0-9-]+\.)+(?:{_ENDINGS})(?:/\S*)?(?!\w)",
    re.IGNORECASE,
)


def never_faults(one: CheckedText) -> Iterable[Fault]:
    """Words that no text says."""
    text = CAUTION_PHRASE[one.language].sub("", one.bare) if one.is_caution else one.bare
    for never in NEVER:
        pattern = never.en if one.language == "en" else never.es
        if one.reason_code not in never.but_in and (hit := pattern.search(text)):
            yield Fault(never.rule, f"“{hit.group()}” may not be said. {never.instead}")


def free_faults(one: CheckedText) -> Iterable[Fault]:
    """Free only with what and how much: where the facts name services, or for a recall, which others do and pay."""
    hit = FREE[one.language].search(one.bare)
    if not hit or one.reason_code == "recall":
        return
    services = one.facts.get("services")
    entries = [entry for entry in services if isinstance(entry, dict)] if isinstance(services, list) else []
    if not entries or not all(entry["name"] in one.said and entry["amount"] in one.said for entry in entries):
        yield Fault("free", f"“{hit.group()}” may stand only with what is free and how much: name and amount of each.")


def link_faults(one: CheckedText, own_domain: str) -> Iterable[Fault]:
    """A link that does not lead to the shop's own domain."""
    own = own_domain.lower().removeprefix("www.")
    for hit in LINK.finditer(one.said):
        # As a browser reads it: a backslash is a slash, and the host is what follows an @, so none may stand there.
        authority = re.split(r"[/?#\\]", re.sub(r"^https?://", "", hit.group().lower()))[0]
        host = authority.partition(":")[0].removeprefix("www.").rstrip(".,;!")
        if not own or "@" in authority or not (host == own or host.endswith("." + own)):
            yield Fault("link", f"“{hit.group()}” does not lead to the shop's own domain. Leave it out.")


def name_faults(one: CheckedText, other_names: Sequence[str]) -> Iterable[Fault]:
    """The name of another person."""
    for name in other_names:
        if name and re.search(rf"(?<!\w){re.escape(name)}(?!\w)", one.bare, re.IGNORECASE):
            yield Fault("second name", f"“{name}” is another person's name. Leave it out.")
