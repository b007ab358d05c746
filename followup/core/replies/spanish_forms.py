"""Spanish as it is said elsewhere, written as the word lists have it: `cobrais` of Spain, `a la do` of the islands.

What Spain says to several people (`vosotros`) becomes what America says to them (`ustedes`): our lists know one form.
"""

from __future__ import annotations

import re

_IRREGULAR = {
    "teneis": "tienen", "podeis": "pueden", "quereis": "quieren", "cerrais": "cierran", "recordais": "recuerdan",
    "contais": "cuentan", "empezais": "empiezan", "sois": "son", "habeis": "han", "volvais": "vuelvan",
    "podais": "puedan", "abris": "abren", "decis": "dicen", "venis": "vienen", "salis": "salen", "recibis": "reciben",
    "escribis": "escriben", "dijisteis": "dijeron", "haced": "hagan", "poned": "pongan", "decid": "digan",
    "vosotros": "ustedes", "vosotras": "ustedes", "vuestro": "su", "vuestra": "su", "vuestros": "sus",
    "vuestras": "sus", "os": "les", "acordaos": "acuerdense", "olvidaos": "olvidense",
}  # fmt: skip
_NO_VERB = frozenset({"seis", "dieciseis", "veintiseis", "pais", "mais", "beis", "leis"})
_ENDINGS = (("asteis", "aron"), ("isteis", "ieron"), ("reis", "ran"), ("ais", "an"), ("eis", "en"))
"""The last that fits is a present or a wish; a future in `reis` has the accent of `seran`."""
_TOLD_TO_ALL = (
    r"(?:quit|borr|dej|par|mand|envi|llam|apunt|anot|cancel|cambi|elimin|olvid|agend|avis|pas|guard|revis|mir|"
    r"reserv|contest|sac|marc|busc|escrib|recib|pon|dec|hac)"
)
_WORDS = re.compile(
    rf"\b(?:(?P<order>{_TOLD_TO_ALL})(?P<vowel>[aei])d(?P<hanging>(?:me|nos|le|les|se)?(?:lo|la|los|las)?)"
    r"|(?P<verb>[a-z]{1,12}(?:[ae]is))|(?P<other>" + "|".join(_IRREGULAR) + r"))\b"
)
_STEMS = {"sac": "saqu", "marc": "marqu", "busc": "busqu", "pon": "pong", "dec": "dig", "hac": "hag"}
_DROPPED = re.compile(r"\bla (?P<hour>do|tre|sei|die)(?=\W|$)|\b(?P<the>el|pal|este|lo|los|de) marte\b")
_HOURS = {"do": "dos", "tre": "tres", "sei": "seis", "die": "diez"}


def _usual(match: re.Match[str]) -> str:
    if match["order"]:
        ending = "en" if match["vowel"] == "a" else "an"
        return _STEMS.get(match["order"], match["order"]) + ending + match["hanging"]
    word = match.group()
    if word in _IRREGULAR:
        return _IRREGULAR[word]
    if word in _NO_VERB:
        return word
    return next(word.removesuffix(old) + new for old, new in _ENDINGS if word.endswith(old))


def _with_s(match: re.Match[str]) -> str:
    return f"las {_HOURS[match['hour']]}" if match["hour"] else f"{match['the']} martes"


def in_usual_forms(text: str) -> str:
    """A Spanish text in lower case with the forms of Spain and the dropped s of the islands as the lists have them."""
    return _DROPPED.sub(_with_s, _WORDS.sub(_usual, text))
