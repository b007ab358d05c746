"""Words of a repair, and whether a fault came with one: `it shakes since you replaced the tires` is no cure."""

from __future__ import annotations

import re

CURE = (
    r"(?:fixed|repaired|replaced|took care of|taken care of|solved|resolved|patched|plugged|cured|sorted(?: "
    r"out)?|swapped|"
    r"(?:put|got|installed|threw|has|have|with) (?:\w+ ){0,4}(?:brand )?new (?:\w+ ){0,3}(?:pads?|rotors?|"
    r"battery|tires?|one|ones|belt|bearing|hose|"
    r"brakes?|parts?|starter|alternator|wheel|gasket|muffler|exhaust|shocks?|struts?|wheel bearing|pump)|new "
    r"(?:pads|rotors|tires|battery|brakes)|"
    r"put (?:a |in a |in )?new|"
    r"arregl(?:o|aron|e|ado|ada|amos)|repar(?:o|aron|ado|ada)|cambi(?:o|aron|e|ado)|compus(?:o|ieron)|"
    r"parch(?:aron|o|ado)|"
    r"quitaron|(?:pusieron|puso|puse|trae) (?:\w+ ){0,3}(?:otr[oa]s?|nuev[oa]s?)|(?:pusieron|puso|puse|pusimos) "
    r"(?:\w+ ){0,2}(?:balatas|pastillas|llantas|gomas|frenos|bateria|bujias|amortiguadores|banda)|"
    r"(?:pastillas|balatas|llantas|"
    r"frenos|bujias) nuev[oa]s|solucion\w+|repus(?:o|ieron|e)|aline(?:aron|o|ado)|balance(?:aron|o|ado)|aligned|"
    r"realigned|balanced|"
    r"rebalanced)"
)
_SINCE = r"\b(?:ever since|since|after|desde que|a partir de que|a raiz de que|despues de que|luego de que)"
_SOMEBODY = (
    r"(?:(?:you|yall|u|they|he|she|i|we|the \w+|your \w+|guys|all|just|ustedes|uds|el|los|del|taller|me|le|lo|la|"
    r"las|les|"
    r"nos|se|yo|it was|they were|ya|last) ){1,4}"
)
_SINCE_REPAIR = re.compile(rf"{_SINCE} {_SOMEBODY}{CURE}\b")
_FAR = 40
_BETTER = re.compile(
    r"\b(?:stopped|quit|gone|went away|away|no|not|never|without|hasnt|havent|hadnt|doesnt|dont|didnt|isnt|wasnt|"
    r"better|fine|great|good|quiet|smooth|happy|thanks|thank|ya ni|sin|dejo de|dejaron de|se (?:le |me )?(?:quito|fue|"
    r"acabo)|desaparecio|mejor|bien|nada|ningun\w*|gracias|nunca|perfecto)\b"
)
"""What tells that the fault ended with the repair, or was not there."""


def came_with_repair(plain: str, start: int, end: int) -> bool:
    """Whether a fault at this place is told to be there since a repair, before it or behind it."""
    sentence = max(plain.rfind(mark, 0, start) for mark in ".!?;\n") + 1
    behind = re.split(r"[.!?;\n]", plain[start : end + _FAR + 60])[0]
    cause = _SINCE_REPAIR.search(behind) or _SINCE_REPAIR.search(plain[sentence:end])
    return bool(cause) and not _BETTER.search(plain[sentence : end + len(behind)])
