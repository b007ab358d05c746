"""Noise of phones and thumbs over labeled replies, of kinds that leave the right answer as it is.

    python -m tests.replies.noise                 how many right answers each kind of noise costs, by language
    python -m tests.replies.noise KIND LANGUAGE   the replies that it costs

Only what is read right as it stands is made noisy, so that a share below 1 is the noise's doing. Draws go by the text
alone: the same lines each time. The kinds are our own list, from memory of what people type.
"""

from __future__ import annotations

import re
import sys
from collections.abc import Callable, Sequence
from random import Random

from tests.replies.contract_cases import Case
from tests.replies.labeled_sets import WHOLE, lines
from tests.replies.reading import read
from tests.replies.test_labeled import is_same

EACH = 4
"""The table is made from every fourth reply."""
_LONG_WORD = re.compile(r"[a-záéíóúñ]{4,}", re.IGNORECASE)
_NEXT_KEY = dict(zip("qwertyuiopasdfghjklzxcvbnm", "wertyuioopsdfghjkllxcvbnmm", strict=True))
_VOWELS = "aeiouáéíóú"
_MARKS = str.maketrans("áéíóúüÁÉÍÓÚ", "aeiouuAEIOU", "¿¡?!.,;'’")

Noise = Callable[[str, str, Random], str]
"""A text, its language and the draw give the noisy text."""


def _in_one_word(change: Callable[[str, int], str], text: str, draw: Random, least: int = 4) -> str:
    """`change` at a letter after the first one of one word of at least `least` letters."""
    words = [one for one in _LONG_WORD.finditer(text) if len(one.group()) >= least]
    if not words:
        return text
    word = draw.choice(words)
    changed = change(word.group(), draw.randrange(1, len(word.group()) - 1))
    return text[: word.start()] + changed + text[word.end() :]


def swapped(text: str, _: str, draw: Random) -> str:
    """Two letters in the wrong order."""
    return _in_one_word(lambda word, at: word[:at] + word[at + 1] + word[at] + word[at + 2 :], text, draw, 5)


def dropped(text: str, _: str, draw: Random) -> str:
    """A letter left out."""
    return _in_one_word(lambda word, at: word[:at] + word[at + 1 :], text, draw, 5)


def doubled(text: str, _: str, draw: Random) -> str:
    """A letter struck twice."""
    return _in_one_word(lambda word, at: word[:at] + word[at] + word[at:], text, draw)


def next_key(text: str, _: str, draw: Random) -> str:
    """The key beside."""
    return _in_one_word(lambda w, at: w[:at] + _NEXT_KEY.get(w[at].lower(), w[at]) + w[at + 1 :], text, draw, 5)


def joined(text: str, _: str, draw: Random) -> str:
    """A space left out between two words of letters."""
    spaces = [one.start() for one in re.finditer(r"(?<=[a-z]{3}) (?=[a-z]{3})", text)]
    if not spaces:
        return text
    at = draw.choice(spaces)
    return text[:at] + text[at + 1 :]


def unmarked(text: str, _: str, __: Random) -> str:
    """Neither punctuation nor accents; what stands within a number or an hour stays."""
    kept = re.sub(r"(?<=\d)[.,](?=\d)", "\0", text)
    return kept.translate(_MARKS).replace("\0", ",")


def shouted(text: str, _: str, __: Random) -> str:
    """All in capital letters."""
    return text.upper()


def greeted(text: str, language: str, draw: Random) -> str:
    """A greeting before it."""
    english = ("hi ", "Hey there, ", "Good morning! ", "hello ", "good afternoon ")
    spanish = ("hola ", "Buenos dias, ", "buenas tardes ", "que tal, ", "Hola buen dia. ")
    return draw.choice(spanish if language == "Spanish" else english) + text


def signed(text: str, language: str, draw: Random) -> str:
    """A polite word or a name behind it."""
    english = (" thanks", ". Thank you!", " thx", " - Pat", " God bless", " have a good one")
    spanish = (" gracias", ". Muchas gracias!", " porfa", " - Pat", " bendiciones", " saludos")
    return text + draw.choice(spanish if language == "Spanish" else english)


def filled(text: str, language: str, draw: Random) -> str:
    """Filler words before, within or behind."""
    english = ("um ", "uh ", "uhh ", "well ", "hmm ", "umm, ")
    spanish = ("este, ", "pues ", "mmm ", "mire ", "ah ", "oiga ")
    end = (" jaja", " jeje") if language == "Spanish" else (" lol", " haha")
    noisy = draw.choice(spanish if language == "Spanish" else english) + text
    return noisy + draw.choice(end) if draw.random() < 1 / 3 else noisy


_SHORT_FORMS = {
    "English": {
        "you": "u", "are": "r", "your": "ur", "please": "plz", "tomorrow": "tmr", "for": "4", "to": "2", "and": "n",
        "with": "w", "about": "bout", "because": "cuz", "before": "b4", "thursday": "thur", "friday": "fri",
        "monday": "mon", "tuesday": "tues", "wednesday": "wed", "saturday": "sat", "morning": "morn", "thanks": "thx",
        "going to": "gonna", "want to": "wanna", "okay": "k", "work": "wrk", "text": "txt", "car": "cr", "know": "kno",
    },
    "Spanish": {
        "que": "q", "por": "x", "porque": "xq", "favor": "fa", "para": "pa", "esta": "ta", "estoy": "toy", "de": "d",
        "bien": "bn", "mensajes": "msjs", "tambien": "tmb", "gracias": "grax", "hoy": "oy", "hasta": "asta",
        "hay": "ay", "ahi": "ai", "voy": "boy", "viernes": "vie", "sabado": "sab", "lunes": "lun", "jueves": "jue",
        "martes": "mar", "miercoles": "mie", "me": "m", "te": "t", "cuando": "cdo", "mucho": "muxo",
    },
}  # fmt: skip


def shortened(text: str, language: str, draw: Random) -> str:
    """Each word that has one in a texting short form, most of the time."""
    forms = _SHORT_FORMS[language]

    def one(found: re.Match[str]) -> str:
        return forms[found.group().lower()] if draw.random() < 2 / 3 else found.group()

    names = "|".join(sorted(map(re.escape, forms), key=len, reverse=True))
    return re.sub(rf"\b(?:{names})\b(?!')", one, text, flags=re.IGNORECASE)


_BY_EAR = {
    "English": (
        ("ight\\b", "ite"), ("\\bbrake", "break"), ("\\bth(?=[aeiou])", "d"), ("ing\\b", "in"), ("ck\\b", "k"),
        ("\\bcould\\b", "cud"), ("\\bwould\\b", "wud"), ("\\bwhat\\b", "wut"), ("\\bthere\\b", "their"),
        ("ould\\b", "uld"), ("ious\\b", "ius"), ("\\bappointment\\b", "apointment"),
    ),
    "Spanish": (
        ("v", "b"), ("b(?=[aeiou])", "v"), ("\\bh(?=[aeiou])", ""), ("ll", "y"), ("z", "s"), ("c(?=[ei])", "s"),
        ("qu(?=[ei])", "k"), ("ñ", "n"), ("g(?=[ei])", "j"), ("y(?=[aeo])", "ll"), ("rr", "r"),
    ),
}  # fmt: skip


def by_ear(text: str, language: str, draw: Random) -> str:
    """Words written as they sound: one such change, at every place."""
    for pattern, instead in draw.sample(_BY_EAR[language], k=len(_BY_EAR[language])):
        changed = re.sub(pattern, instead, text)
        if changed != text:
            return changed
    return text


def dictated(text: str, language: str, _: Random) -> str:
    """As a phone writes down what it hears: marks in words, `a m`, no capital letters."""
    words = (" coma", " punto") if language == "Spanish" else (" comma", " period")
    text = re.sub(r"(?<=[a-z]),(?= )", words[0], text.lower())
    text = re.sub(r"(?<=\d)\s?([ap])\.?m\b\.?", r" \1 m", text)
    return text.rstrip(".!") + words[1]


def stretched(text: str, _: str, draw: Random) -> str:
    """The last vowel of a word drawn out."""
    ends = [one.start() for one in re.finditer(rf"[{_VOWELS}](?=\b)|[{_VOWELS}](?=s\b)", text)]
    if not ends:
        return text
    at = draw.choice(ends)
    return text[:at] + text[at] * 3 + text[at + 1 :]


def broken(text: str, _: str, draw: Random) -> str:
    """Line breaks or dots for a space, or more spaces than one."""
    spaces = [one.start() for one in re.finditer(r"(?<=[a-z]{2}) (?=[a-z]{2})", text)]
    if not spaces:
        return text
    at = draw.choice(spaces)
    return text[:at] + draw.choice(("...", "  ", " .. ")) + text[at + 1 :]


_OTHER_LANGUAGE = {
    "English": {
        "monday": "lunes", "tuesday": "martes", "thursday": "jueves", "friday": "viernes", "tomorrow": "mañana",
        "thanks": "gracias", "yes": "si", "please": "por favor", "saturday": "sabado", "car": "carro", "but": "pero",
    },
    "Spanish": {
        "lunes": "monday", "martes": "tuesday", "jueves": "thursday", "viernes": "friday", "gracias": "thanks",
        "si": "yes", "por favor": "please", "sabado": "saturday", "carro": "car", "pero": "but", "mensajes": "texts",
        "frenos": "brakes", "llanta": "tire", "cita": "appointment",
    },
}  # fmt: skip


def switched(text: str, language: str, draw: Random) -> str:
    """One word in the other language."""
    forms = _OTHER_LANGUAGE[language]
    held = [one for one in forms if re.search(rf"\b{one}\b", text, re.IGNORECASE)]
    if not held:
        return text
    word = draw.choice(held)
    return re.sub(rf"\b{word}\b", forms[word], text, count=1, flags=re.IGNORECASE)


KINDS: dict[str, Noise] = {
    one.__name__: one
    for one in (
        swapped, dropped, doubled, next_key, joined, unmarked, shouted, greeted, signed, filled, shortened, by_ear,
        dictated, stretched, broken, switched,
    )
}  # fmt: skip


def noisy(kind: str, language: str, cases: Sequence[Case]) -> list[tuple[Case, str]]:
    """The replies that are read right as they stand, each with its noisy text; none that the noise leaves alone."""
    found = []
    for case in cases:
        asked, text, meanings, expected = case
        changed = KINDS[kind](text, language, Random(f"{kind} {text}"))
        if changed != text and is_same(read(text, asked), meanings, expected):
            found.append((case, changed))
    return found


def is_kept(case: Case, changed: str) -> bool:
    """Whether the noisy text is read as the reply itself."""
    asked, _, meanings, expected = case
    return is_same(read(changed, asked), meanings, expected)


def main(arguments: Sequence[str]) -> None:
    """Print the table, or what one kind costs."""
    cases = {one: [case for name in names for case in lines(name)][::EACH] for one, names in WHOLE.items()}
    if arguments:
        kind, language = arguments
        for case, changed in noisy(kind, language, cases[language]):
            if not is_kept(case, changed):
                out = read(changed, case[0])
                print(f"[{case[0]}] {changed!r}: {case[2]} {case[3]} read as {out.meanings} {out.certainty}")
        return
    for kind in KINDS:
        told = []
        for language, replies in cases.items():
            held = [is_kept(*one) for one in noisy(kind, language, replies)]
            told.append(f"{language} {100 * sum(held) / len(held):5.1f} % of {len(held):4d}")
        print(f"{kind:10s} {'   '.join(told)}")


if __name__ == "__main__":
    main(sys.argv[1:])
