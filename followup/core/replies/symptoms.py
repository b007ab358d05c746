"""What a customer reports about a car that may be unsafe now, and how soon a person must look at it.

`stop_now` and `today` follow the trade's two kinds; in doubt the stricter one counts.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Literal

from followup.core.replies.plain import make_plain
from followup.core.replies.said import Said, phrases
from followup.core.replies.symptom_words import BRAKES, BULGE, FLAT, HEAT, LAMPS, STEERING
from followup.core.replies.symptom_words_today import TODAY

Severity = Literal["stop_now", "today"]

_OVER = re.compile(
    r"\b(?:lawyers?|attorneys?|(?:to|ill|gonna|will|and) sue|sue (?:you|u|yall|them|this)|"
    r"suing|lawsuit|legal action|injur(?:y|ed|ies)|hurt (?:me|my|us|"
    r"in)|ambulance|accident|crash(?:ed)?|wreck(?:ed)?|collision|(?:caught|was on|had a|"
    r"been a) fire|burned (?:down|up)|police report|insurance claim|abogad[oa]s?|demanda(?:r|"
    r"rlos)?|lesion\w*|heridos?|ambulancia|accidente|choque|choco|chocamos|"
    r"se (?:incendio|quemo)|demandar\w*)\b"
)

_FLAT_PATTERN, _STOP_NOW_PATTERN, _TODAY_PATTERN = (
    phrases(*FLAT),
    phrases(*FLAT, *BULGE, *BRAKES, *STEERING, *HEAT, *LAMPS),
    phrases(*TODAY),
)
_BEYOND_FLAT = phrases(*BULGE, *BRAKES, *STEERING)
_DENIED = re.compile(
    r"(?:\b(?:no|not|without|isnt|doesnt|didnt|never|arent|wasnt|havent|hasnt|sin|ningun|ninguna|"
    r"nunca|ni|nothing|any)\b(?! (?:sure|only|just about|longer|more|mas))(?: (?:been|had|made|a|"
    r"an|any|hay|hace|hacen|have|having|hear|heard|hearing|see|seen|seeing|feel|felt|notice|"
    r"noticed|noticing|show|showing|tiene|tengo|veo|escucho|siento|trae|se|me|longer|really|more|"
    r"weird|strange|bad|such|making|make|signs? of|the|warning|other|check|engine|funny|new|of|"
    r"luces|nada|de|flat|or|ni|y|leaks?|noises?|vibrations?|smoke|shaking|ruidos?|fugas?|otro|"
    r"otra|red|lights?|esta|on|issues?|problems?|with)){0,5} ?)$"
)
_CURED = re.compile(
    r"\b(?:fix(?:ed)?|repaired|replaced|took care of|taken care of|solved|resolved|patched|"
    r"plugged|towed it to|arregl(?:o|aron|e|ado|ada)|repar(?:o|aron|ado|ada)|cambiaron|"
    r"compusieron|parcharon)\b"
)
_NOT_CURED = re.compile(
    r"\b(?:still|again|not (?:fix|repair)\w*|didnt fix|wasnt fixed|never fixed|isnt fixed|needs?|"
    r"need to|have to|want|get it|to be|can you|could you|please|when|back|todavia|sigue|otra vez|"
    r"no (?:lo )?(?:arregl|repar)\w*|after|since you|desde que|aun|need|want|puedo|pueden|"
    r"necesito|(?:but|pero)(?! (?:\w+ ){0,3}(?:fixed|repaired|replaced|patched|solved|took care|"
    r"arregl\w+|repar\w+))|now)\b"
)
_WIPER = re.compile(r"\b(?:wiper|wipers|blade|blades|limpiaparabrisas|limpiadores?|plumas|plumillas|escobillas)\b")
_WIPER_NOISE = re.compile(
    r"squeak|squeal|nois|chatter|streak|screech|rechin|chill|chirri|ruido|scrap|judder|shudder|vibra|grind|rubber"
)
_HARMLESS = re.compile(
    r"\b(?:make some noise|(?:lo|la) choque,? (?:y )?ya no (?:existe|lo tengo|la tengo|sirvio|quedo)|"
    r"(?:will|would|could|is|are|gonna) (?:it|they|this|that|my \w+) (?:\w+ ){0,3}(?:break down|die|"
    r"fail|leak|overheat|stall|leave me stranded)(?: on me)?|flat tire on (?:\w+ ){0,3}(?:bike|"
    r"bicycle|trailer|stroller)|se (?:lo|la) "
    r"llevo la grua|(?:quit|quitting|stop|stopped|no) smoking|"
    r"smok(?:e|ing) (?:weed|pot|cigar\w*|breaks?)|"
    r"drip coffee|no smoking|smoke free|fire (?:away|when ready)|youre fired|"
    r"got fired|on fire sale|fuego artificial\w*|fireworks?|leak ?proof|traffic (?:is |"
    r"was )?(?:crash|accident)|there(?:s| is| was) (?:an|a) (?:accident|crash|wreck) on|"
    r"accident on (?:the|i|hwy|highway|route)|hay un (?:accidente|choque) (?:en|adelante)|"
    r"accident ahead|wreck on|(?:hit |every |at (?:a|the|every) )red lights?|(?:kids|traffic|boss|phone) (?:made|was)|"
    r"shake on it|shaking my head|smoking deal|smoke detector|(?:red|rojo) light (?:camera)|"
    r"stuck (?:in|at|behind|with)|phone (?:is |just |was )?(?:died|dead|dies)|my phone (?:died|"
    r"quit|is dead)|(?:cant|couldnt|wont|dont|didnt) stop (?:by|in (?!time)|laughing|over|at)|dont stop (?:by|in)|dog|"
    r"cat sounds|warning you|price increase|fallando (?:a|en) (?:la )?cita|the crash course|"
    r"out of gas|vapor rub|temblor de|on fire today|fire department)\b"
)
_JUDGMENT = re.compile(
    r"\b(?:(?:is|was) (?:it|that|this) (?:still )?(?:safe|ok|okay|dangerous|alright|fine|bad|"
    r"urgent|serious)|safe to|ok to drive|okay to drive|can (?:it|this|that) wait|"
    r"can i wait(?! (?:there|here|in|at|inside|while|for (?:it|the))\b)|how long can|"
    r"how long (?:do|will) (?:i|it|they) (?:have|last)|can i (?:still |keep )?(?:drive|make it)|"
    r"will (?:it|they) (?:last|make it|hold|be ok)|should i (?:worry|be worried|drive|stop|wait)|"
    r"how (?:urgent|bad|serious|soon)|"
    r"do i (?:really )?(?:have|need) to|road trip|long (?:drive|trip)|with (?:my |the )?(?:kids?|"
    r"children|baby)|my (?:kids?|baby|children)|is it an emergency|what happens if|"
    r"drive (?:it )?(?:to|on|until|till)|trip|"
    r"es (?:segur[oa]|peligros[oa]|grave|urgente|seri[oa])|puedo (?:manejar|seguir|"
    r"conducir|andar|viajar|usar)|"
    r"puedo esperar(?! (?:ahi|aqui|alli|alla|en|adentro|mientras)\b)|"
    r"puede esperar|cuanto (?:aguanta|dura|puedo esperar|"
    r"tiempo (?:aguanta|puedo))|aguanta\w*|hay peligro|que tan (?:grave|urgente|mal|malo|"
    r"peligroso)|viaje|con (?:mis |los )?(?:ninos|hijos|nietos)|mis hijos|que pasa si|"
    r"debo preocuparme)\b"
)


def _plain(text: str) -> str:
    return make_plain(text, None).text


def _clauses(plain: str) -> list[str]:
    return [part for part in re.split(r"[.!?;\n]+", plain) if part.strip()]


def _holds(pattern: re.Pattern[str], plain: str) -> bool:
    """Whether the text reports something of this pattern that is not denied, cured, or a wiper's noise."""
    for clause in _clauses(plain):
        for match in pattern.finditer(clause):
            if not _is_excused(clause, match.start(), match.group()):
                return True
    return False


def _is_excused(clause: str, start: int, words: str) -> bool:
    left = clause[max(0, start - 60) : start]
    left = re.split(r",|\b(?:but|pero|because|porque|and it|y (?:se|el|la|me))\b", left)[-1]
    is_negative_itself = re.match(
        r"(?:wont|cant|no|not|doesnt|dont|barely|hardly|didnt|couldnt|without|lost|sin|casi|never|trouble)\b", words
    )
    if not is_negative_itself and _DENIED.search(left):
        return True
    return bool(_WIPER.search(clause) and _WIPER_NOISE.search(words))


def reports(plain: str) -> bool:
    """Whether a plain text reports a symptom."""
    cleaned = _HARMLESS.sub(" ", plain)
    found = _holds(_STOP_NOW_PATTERN, cleaned) or _holds(_TODAY_PATTERN, cleaned)
    if not found:
        return False
    return not _is_cured(cleaned)


def without_reports(said: Said) -> Said:
    """The same text without the words of its symptoms, for what else stands in it."""
    return replace(said, text=_TODAY_PATTERN.sub(" ; ", _STOP_NOW_PATTERN.sub(" ; ", said.text)))


def _is_cured(plain: str) -> bool:
    return bool(_CURED.search(plain)) and not _NOT_CURED.search(plain)


def severity(text: str) -> Severity | None:
    """How soon a person must act on what this text reports; None where it reports nothing. The stricter in doubt."""
    plain = _HARMLESS.sub(" ", _plain(text))
    if _is_cured(plain):
        return None
    if _holds(_STOP_NOW_PATTERN, plain):
        return "stop_now"
    return "today" if _holds(_TODAY_PATTERN, plain) else None


def is_flat_only(text: str) -> bool:
    """Whether a flat is all that it reports, with nothing about brakes, steering, a wobble, a bulge or cord."""
    plain = _HARMLESS.sub(" ", _plain(text))
    return _holds(_FLAT_PATTERN, plain) and not _holds(_BEYOND_FLAT, plain)


def has_legal_words(text: str) -> bool:
    """Whether injury, a lawyer, a crash, or a fire that is over stands in it."""
    return bool(_OVER.search(_plain(text)))


def judgment(text: str) -> bool:
    """Whether it asks for a judgment that no text may give: is it safe, can it wait, a trip, kids."""
    plain = _plain(text)
    return bool(_JUDGMENT.search(plain)) and (
        "?" in text or bool(re.search(r"\b(?:can|is|should|will|do|how|puedo|es|que|cuanto|aguanta|debo)\b", plain))
    )
