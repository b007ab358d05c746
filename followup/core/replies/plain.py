"""A received text made plain for matching: lower case, no accents or emoji, one kind of quotes, short forms out."""

from __future__ import annotations

import re
import unicodedata
from dataclasses import dataclass

from followup.core.replies.spanish_forms import in_usual_forms
from followup.core.replies.spelled_years import with_years
from followup.core.replies.spelling import lone_keyword, mended
from followup.core.replies.words.english import MARKERS as ENGLISH
from followup.core.replies.words.spanish import MARKERS
from followup.core.replies.words.spanish_signs import SIGNS

SPANISH = MARKERS | SIGNS
LONGEST_TEXT = 1600
"""Characters that are read; a text message holds no more."""

_APOSTROPHES = str.maketrans(
    {
        "\u2019": "'", "\u2018": "'", "\u02bc": "'", "`": "'", "\u00b4": "'", "\u201c": '"', "\u201d": '"',
        "\u00ab": '"', "\u00bb": '"', "\u2013": "-", "\u2014": "-", "\u2212": "-", "\u2026": ".", "\u00bf": " ",
        "\u00a1": " ", "\u00ba": " ", "\u00aa": " ", "\u00bd": " half ", "\r": "\n", "_": " ", "*": " ",
        "\u00a3": "$", "\u20ac": "$", "\u0131": "i", "\u0130": "i",
    }
)  # fmt: skip
_SHORT_FORMS = {
    "u": "you", "ur": "your", "r": "are", "pls": "please", "plz": "please", "plse": "please", "thx": "thanks",
    "thnx": "thanks", "thanx": "thanks", "tnx": "thanks", "ty": "thanks", "tysm": "thanks", "appt": "appointment",
    "appts": "appointment", "apt": "appointment", "wont": "wont", "yea": "yeah", "ya": "yeah", "yeh": "yeah",
    "yas": "yes", "yess": "yes", "yup": "yep", "k": "ok", "kk": "ok", "okey": "ok", "okie": "ok", "oke": "ok",
    "okay": "ok", "okk": "ok", "okies": "ok", "cuz": "because", "bc": "because", "gonna": "going to",
    "wanna": "want to", "gotta": "got to", "lemme": "let me", "dunno": "dont know", "yall": "you", "cannot": "cant",
    "can't": "cant", "gr8": "great", "l8r": "later", "w": "with", "wrk": "work", "abt": "about", "rn": "now",
    "resched": "reschedule", "asap": "asap", "im": "im", "nah": "no", "naw": "no", "nope": "no", "noo": "no",
    "unsub": "unsubscribe", "msgs": "messages", "msg": "message", "txt": "text", "txts": "texts", "txting": "texting",
    "txtin": "texting", "mileage": "mileage", "bk": "back", "wen": "when", "wat": "what", "wht": "what",
    "shld": "should", "cld": "could", "wld": "would", "hows": "how is", "whats": "what is", "wheres": "where is",
    "whos": "who is", "thats": "that is", "its": "it is", "dont": "dont", "ive": "i have", "theres": "there is",
    "grax": "gracias", "grasias": "gracias", "porfa": "por favor", "porfavor": "por favor", "addy": "address",
    "diff": "different", "hrs": "hours", "lil": "little", "eta": "eta", "sry": "sorry", "srry": "sorry", "tht": "that",
    "absolutly": "absolutely", "absolutley": "absolutely", "definately": "definitely", "defintely": "definitely",
    "defo": "definitely", "unsuscribe": "unsubscribe", "gud": "good", "goin": "going", "comin": "coming",
    "runnin": "running", "makin": "making", "doin": "doing", "gettin": "getting", "havin": "having",
    "msging": "messaging", "msgin": "messaging", "txted": "texted", "sumthin": "something", "somethin": "something",
    "nuthin": "nothing", "somethings": "something is", "tryna": "trying to", "kinda": "kinda", "shouldnt": "shouldnt",
    "sho": "sure", "fo": "for", "atm": "at the moment",
    "bout": "about", "nite": "night", "rnd": "around", "aight": "alright", "ight": "alright", "yuppers": "yep",
    "yupp": "yep", "yepper": "yep", "yepp": "yep", "yupper": "yep",
    "em": "them", "yse": "yes", "eys": "yes", "oky": "ok", "oki": "ok",
    "suure": "sure", "nothankyou": "no thank you", "nothanks": "no thanks", "nty": "no thanks", "chrismas": "christmas",
    "schdule": "schedule", "intrested": "interested", "nto": "not", "wnt": "want", "tenn": "ten",
    "b4": "before", "tho": "though", "thru": "through", "prolly": "probably", "prob": "probably",
    "ppl": "people", "stpo": "stop", "sotp": "stop", "stp": "stop",
    "tsop": "stop", "stahp": "stop", "nlt": "no later than", "nxet": "next", "nxt": "next", "mabye": "maybe",
    "culd": "could", "cud": "could", "wuld": "would", "wud": "would", "shud": "should", "shuld": "should",
    "wut": "what", "wot": "what", "rite": "right", "lite": "light", "pik": "pick", "chek": "check", "bak": "back",
    "dis": "this", "dat": "that", "dats": "that is", "dem": "them", "dose": "those", "truk": "truck", "hw": "how",
    "matbe": "maybe", "tmmrw": "tomorrow", "tmrow": "tomorrow", "yez": "yes",
}  # fmt: skip
_SPANISH_SHORT_FORMS = {
    "q": "que", "k": "que", "ke": "que", "xq": "porque", "pq": "porque", "xk": "porque", "tb": "tambien",
    "tmb": "tambien", "tambn": "tambien", "x": "por", "xfa": "por favor", "xfavor": "por favor", "porfa": "por favor",
    "porfis": "por favor", "porfavor": "por favor", "grax": "gracias", "grcs": "gracias", "grasias": "gracias",
    "gracia": "gracias", "bn": "bien", "dsps": "despues", "dps": "despues", "d": "de", "okey": "ok", "okay": "ok",
    "oki": "ok", "sip": "si", "sii": "si", "nop": "no", "ps": "pues", "pos": "pues", "msj": "mensaje",
    "msjs": "mensajes", "msjes": "mensajes", "mjs": "mensajes", "kiero": "quiero", "kien": "quien", "qn": "quien",
    "pa": "para", "pal": "para el", "orita": "ahorita", "horita": "ahorita", "porke": "porque",
    "porfas": "por favor",
    "tempra": "temprano", "sabadito": "sabado", "carrito": "carro", "ratito": "rato", "exo": "hecho",
    "aver": "a ver", "asta": "hasta", "boy": "voy",
    "llamarle": "llamarle", "nadamas": "nada mas", "namas": "nada mas", "tons": "entonces",
    "cdo": "cuando", "cnd": "cuando", "dnd": "donde", "aki": "aqui", "toy": "estoy", "ta": "esta", "tarde": "tarde",
    "alas": "a las", "ala": "a la", "carro": "carro", "ntp": "no te preocupes",
    "cualkiera": "cualquiera", "cualkier": "cualquier", "ekivocado": "equivocado", "ekivoco": "equivoco",
    "aunke": "aunque", "depue": "despues", "despue": "despues", "depues": "despues", "tamo": "estamos", "lune": "lunes",
    "jueve": "jueves", "vierne": "viernes", "miercole": "miercoles",
    "guele": "huele", "guelo": "huelo", "reboco": "revoco", "qanto": "cuanto", "kuanto": "cuanto", "cuezta": "cuesta",
    "kuesta": "cuesta", "questa": "cuesta", "aorita": "ahorita", "aora": "ahora", "pueo": "puedo",
    "mnna": "manana", "prosimo": "proximo", "zi": "si", "fabor": "favor", "vdd": "verdad", "vrd": "verdad",
}  # fmt: skip
_CONTRACTED = re.compile(r"\b(we|he|she|they|it|that)'(d|ll)\b")
_WORD = re.compile(r"[a-z]+(?:'[a-z]+)*|\d+[a-z]*|[^\sa-z\d]|\s+")
_HARD_K = re.compile(r"^k(?=i(?!l|t$|a$|ds?$)|e(?!n$|ys?$))|(?<=^sa)k(?=e)")
"""The k with which texting writes the Spanish qu (`kitenme`); not in kilometers, kids or keys."""
_DIGIT_WORDS = {
    "2day": "today", "2moro": "tomorrow", "2morrow": "tomorrow", "2mrw": "tomorrow", "2nite": "tonight",
    "2night": "tonight",
}  # fmt: skip
_LETTER_DIGIT_WORDS = tuple(
    (short, re.compile(rf"\b{short}\b"), long)
    for short, long in (("b4", "before"), ("gr8", "great"), ("l8r", "later"), ("l8", "late"), ("w8", "wait"))
)
_THUMBS_UP = re.compile("[\U0001f44d\U0001f44c\U0001f197\u2705\u2714\U0001f4af\U0001f64c\U0001f44f\U0001f91d\u2611]")
_THUMB_FIRST = re.compile("\\s*\U0001f44d")
"""At its head it answers, whatever words follow: `(thumbs up) got a sitter`."""
_THUMBS_DOWN = re.compile("[\U0001f44e\u274c\U0001f645\U0001f6ab\u26d4\u2716]")
_FOLDED_HANDS = re.compile(
    "[\U0001f64f\u2764\U0001f60a\U0001f642\U0001f600\U0001f601\U0001f604\U0001f603\U0001f389\U0001f970\U0001f618]"
)


@dataclass(frozen=True)
class Plain:
    """A text made plain: `text` for matching, the language it seems to be in, and a lone emoji's word."""

    text: str
    language: str | None
    """The language that the words show, None where nothing shows it."""
    is_emoji_only: bool


_FOLDS: tuple[tuple[re.Pattern[str], str], ...] = (
    (re.compile(r"(?<=[a-z])\"(?=[a-z])"), "'"),
    (re.compile(r"\bo ?[\"'] ?clock"), "oclock"),
    (re.compile(r"(?:(?<=\d\d)|(?<=\d[,.]\d)|(?<=\do))o(?=[o\d]*\b)(?!o* ?'? ?clock)"), "0"),
    (re.compile(r"\bpal (?=(?:mon|tues|wednes|thurs|fri|satur)day\b)"), "for "),
    (re.compile(r"\balas (?=\d)"), "a las "),
    (re.compile(r"\bala (?=1\b(?!\d))"), "a la "),
    (re.compile(r"\bnet (?=\d{1,4}\b)"), "no earlier than "),
    (re.compile(r"\bround(?= (?:\d|noon|lunch|(?:one|two|three|four|eight|nine|ten)\b))"), "around"),
    (re.compile(r"(?<=\d)[ -]?k\b"), "k"),
    (re.compile(r"(?<=\d)'s\b"), " is"),
    (
        re.compile(
            r"\b(mon|tues?|weds?|thu|thurs?|fri|sat|sun|car|truck|van|battery|tire|engine)'s (?=my|the|our|a|no|not|"
            r"been|good|bad|fine|best|better|ok|out|open|free|wide|perfect|great|gone|dead|flat)"
        ),
        r"\1 is ",
    ),
    (re.compile(r"\b(\d{1,2}),(?=20\d\d\b)"), r"\1, "),
    (re.compile(r"\b(twenty|thirty|forty|fifty|half|quarter|mid)-(?=[a-z])"), r"\1 "),
    (re.compile(r"(?<=\d)[.:](?=[ap]\.? ?m\b)"), " "),
    (re.compile(r"\b(\d{1,2}): +(?=[0-5]\d\b)"), r"\1:"),
    (re.compile(r"\ba t ?(?=\d)"), "at "),
    (re.compile(r"\bst\. ?(?=(?:patrick|paddy|valentine|john|james|joseph|nicholas|stephen))"), "st "),
    (re.compile(r"\b(\d{1,2}),(?=20\d\d\b)"), r"\1, "),
    (re.compile(r"(?<=[a-z]s)' (?=(?:days?|eve|birthday|week|weekend)\b)"), " "),
    (re.compile(r"\b(ma|a|ni|due|se|oto)[;~](ana|os?|as?|or|ora)\b"), r"\1n\2"),
    (re.compile(r"([a-z])\1{2,}"), r"\1"),
)
"""What is written in one way before words are looked at; a letter three times and more counts once."""
_LEADING_FILLERS = re.compile(
    r"^\s*(?:(?:u+m+|u+h+(?! huh)|h*m{2,}|er+|oiga|mire|fijese(?: que)?|este(?=,))[,. ]+)+(?=\S)"
)
"""What a voice says before it knows what to say."""
_LONE = re.compile(r"\W*(?P<word>[a-z0]{4,13})\W*(?:(?:please|pls|plz|thanks|por ?favor|porfa|gracias)\W*)?")
"""A word that is the whole text but for manners."""
_HAS_WORD = re.compile(r"[a-z\d]")


def make_plain(received: str, language: str | None) -> Plain:
    """The received text made plain; `language` (if known) decides where the words do not."""
    text = received[:LONGEST_TEXT].translate(_APOSTROPHES)
    shown = "" if text.isascii() else _lone_emoji(text)
    folded = text.lower()
    if not folded.isascii():
        folded = unicodedata.normalize("NFKD", text).lower()[: 2 * LONGEST_TEXT]
        folded = "".join(char if ord(char) < 128 else _ascii(char) for char in folded)
    if "'" in folded:
        folded = _CONTRACTED.sub(lambda match: match[1] + (" would" if match[2] == "d" else " will"), folded)
    for pattern, instead in _FOLDS:
        folded = pattern.sub(instead, folded)
    folded = with_years(_LEADING_FILLERS.sub("", folded))
    for short, pattern, long in _LETTER_DIGIT_WORDS:
        folded = pattern.sub(long, folded) if short in folded else folded
    seen = seen_language(folded.replace("'", ""))
    tongue = seen or language or "en"
    lone = _LONE.fullmatch(folded)
    if lone:
        folded = folded.replace(lone["word"], lone_keyword(lone["word"].replace("0", "o")))
    if tongue == "es":
        folded = in_usual_forms(folded)
    plain = _tidy(_spell_out(folded, tongue))
    if seen is None and language is None and seen_language(plain) is None:
        other = _tidy(_spell_out(in_usual_forms(folded), "es"))
        if seen_language(other) == "es" and not _FRIEND.search(folded):
            plain, seen = other, "es"
    if not _HAS_WORD.search(plain):
        return Plain(shown, seen or language, bool(shown))
    if shown == "thumbsup" and _THUMB_FIRST.match(text):
        plain = f"thumbsup, {plain}"
    return Plain(plain, seen or language, False)


def _ascii(char: str) -> str:
    """What stands for a character that is not ASCII: nothing for an accent, a space for anything else."""
    return "" if unicodedata.combining(char) or char in "\u200d\ufe0f\u200b\u2060" else " "


def _lone_emoji(text: str) -> str:
    for pattern, word in ((_THUMBS_DOWN, "thumbsdown"), (_THUMBS_UP, "thumbsup"), (_FOLDED_HANDS, "thanksemoji")):
        if pattern.search(text):
            return word
    return ""


def _spell_out(text: str, language: str) -> str:
    """The text with short forms written out, apostrophes dropped and typing errors mended."""
    forms = _SPANISH_SHORT_FORMS if language == "es" else _SHORT_FORMS
    parts = []
    for word in _WORD.findall(text):
        if word[0].isalpha():
            word = word.replace("'", "")
            if language == "es":
                word = _HARD_K.sub("qu", word)
            word = forms.get(word) or mended(word, language)
        elif word[0].isdigit() and not word.isdigit():
            word = _DIGIT_WORDS.get(word) or _BEFORE_LETTER.sub(" ", word)
        parts.append(word)
    return "".join(parts)


_BEFORE_LETTER = re.compile(r"(?<=\d)(?=[a-z])")
_BEFORE_DIGIT = re.compile(r"(?<=[a-z])(?=\d)")
_NEW_LINE = re.compile(r"\s*\n\s*")
_HALF_DAY = re.compile(r"\b([ap]) ?\. ?m\b\.?")
_SPACES = re.compile(r"[ \t\f\v\x00-\x1f]+")
_MILES = re.compile(r"(?<=\d) ?(?:k )?mi\b")
_FRIEND = re.compile(r"\bpal\b(?= ?(?:[.,!?]|$))")
"""Who is spoken to (`kick rocks pal`), where Spanish would go on with a noun (`pal lunes`)."""
_LETTERS = re.compile(r"[a-z]+")


def _tidy(text: str) -> str:
    """One space between words, numbers apart from letters, a new line as the end of a sentence."""
    text = _BEFORE_DIGIT.sub(" ", text)
    text = _NEW_LINE.sub(" . ", text.strip())
    text = _HALF_DAY.sub(r"\1m", text)
    return _SPACES.sub(" ", text).strip()


def seen_language(text: str) -> str | None:
    """The language whose common words the text holds more of, None where neither shows."""
    words = _LETTERS.findall(_FRIEND.sub("", _MILES.sub("", text)))
    english = sum(word in ENGLISH for word in words)
    spanish = sum(word in SPANISH for word in words)
    if english == spanish:
        return None
    return "es" if spanish > english else "en"
