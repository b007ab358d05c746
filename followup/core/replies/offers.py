"""Picking among offered times: by the hour, the day, the place in the list, or ruling them out."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import datetime, time, timedelta

from followup.core.replies.contract import TimeWindow
from followup.core.replies.mentions import Hours, Setting
from followup.core.replies.said import phrases, whole
from followup.core.replies.times import Read
from followup.core.replies.windows import Choice, iso, overlaps, point, resolve, time_spans

_TOO = phrases(
    r"(?<!be )(?<!running )(?<!get there )(?<!im )(?:too|muy|demasiado|super|way too|kinda|a bit|a little) (?:early|"
    r"late|soon|temprano|tarde|pronto)",
    r"(?:tempran|tard|pront)isim[oa]",
    r"(?:esta|es|queda|seria|sale|se me hace) (?:bien|re|super|rete|bastante|tan|algo|medio|un poco) (?:tempran(?:o|"
    r"ito)|tarde|pronto)",
)
_EITHER = phrases(
    r"either(?: one| of (?:those|them)| works| is| way| day| time|\Z)?",
    r"both (?:work|are|would|times|days|fine|good|ok)",
    r"any of (?:those|them|these)(?: (?:\d|two|three|four))?",
    r"(?:doesnt|does not|dont) matter(?: which| to me)?",
    r"whichever(?: one)?",
    r"dealers? choice|(?:your|yalls|ur) (?:choice|call|pick)|dont (?:care|mind) (?:which|when)|makes no difference",
    r"all of (?:those|them|these) (?:work|are)",
    r"any one",
    r"no preference",
    r"you (?:pick|choose)",
    r"ustedes (?:digan|decidan|dicen|deciden|diran|manden)",
    r"up to you",
    r"those (?:all |both )?work",
    r"any works",
    r"cualquiera(?: de (?:las|los|esas|esos|ambas|ambos)(?: (?:dos|tres))?)?",
    r"tod[oa]s (?:me |estan |esas |esos )?(?:quedan|sirven|funcionan|bien|convienen)",
    r"(?:escoja|elija|escojan|elijan)(?: usted(?:es)?)?",
    r"(?:las|los) dos (?:me |estan|sirven|funcionan|est)",
    r"(?:ambas|ambos)(?: me)?",
    r"la que (?:sea|quieran|guste|mejor)",
    r"el que (?:sea|quieran)",
    r"(?:me )?da (?:igual|lo mismo)",
    r"no importa cual",
    r"no tengo preferencia",
    r"ustedes (?:escojan|elijan)",
)
_ALL_OF_TWO = phrases(
    r"cualquiera de (?:las|los|esas|esos|estas|estos) (?:dos|2|tres|3)",
    r"(?:cualquiera\W+)(?:\w+ ){0,3}(?:libres?|bien|disponibles?) (?:las|los) (?:dos|2|tres|3)(?= ?(?:\Z|[.,!]))",
    r"(?:tengo|estan|estoy) (?:libres?|disponibles?) (?:en )?(?:las|los) (?:dos|2|tres|3)(?= ?(?:\Z|[.,!]))",
    r"(?:las|los) dos (?:me |estan |sirven|funcionan)\w*",
    r"either of the two",
    r"both of them work",
    r"(?:las|los) (?:dos|tres|cuatro) (?:me |estan |sirven|funcionan|quedan)\w*",
    r"all (?:two|three|four|3|4)(?: of (?:them|those))? (?:work|are|sound|would)",
)
_NONE = phrases(
    r"none(?: of (?:those|them|these|the (?:above|times)))?(?: \w+)?",
    r"neither(?: one| of (?:those|them)| works?)?",
    r"(?:those|these|them|they|any of (?:those|these|them)|either(?: of (?:those|them))?|both|"
    r"all of (?:those|them)) (?:times? |days? )?(?:dont|wont|do not|doesnt|cant|arent|are no|"
    r"are not|are bad|isnt|are (?:all )?(?:bad|out))(?: \w+)?",
    r"(?:cant|cannot|wont|not able to|dont) (?:\w+ )?(?:do|make|any|either) (?:of )?(?:any|either|"
    r"those|these|them)(?: of (?:those|them))?",
    r"not (?:those|these|any of|either)",
    r"ningun[oa](?: de (?:las|los|esas|esos|ellas)(?: dos)?)?",
    r"ni (?:una|uno)(?: ni (?:otra|otro|la otra))?",
    r"no (?:me |puedo )?(?:sirven|quedan|funcionan|acomodan|convienen|puedo) ?(?:esas|esos|"
    r"ninguna|ninguno|esos dias|esas horas)?(?: horas| dias)?\Z",
    r"(?:esas|esos)(?: \w+)? no(?: \w+)*",
)
_PLACES = (
    phrases(
        r"(?:the )?(?:first|1 ?st)(?: one| option| slot| time| choice| 1)?(?! (?:thing|week|of(?! (?:those|these|"
        r"them|the (?:two|three|four|"
        r"ones|times|options|slots|lot|bunch))\b)|available|half))",
        r"(?:option|number|choice|slot|opcion|numero|#) ?(?:1|one|a|uno)",
        r"(?:la|el) (?:primer[oa]?|1|1ra|uno)(?: opcion| hora| horario)?(?! (?:hora de|semana))",
        r"primer[oa](?! (?:hora|dig\w+|necesito|quiero|quisiera|me|expli\w+|cuanto|que|hay|tengo|lla\w+)\b)",
        r"a\Z",
    ),
    phrases(
        r"(?:the )?(?:second|2 ?nd)(?: one| option| slot| time| choice| 1)?(?! (?:week|of(?! (?:those|these|them|the "
        r"(?:two|three|four|ones|times|options|slots|lot|bunch))\b)|half))",
        r"(?:option|number|choice|slot|opcion|numero|#) ?(?:2|two|b|dos)",
        r"(?:la|el) (?:segund[oa]|2|2da|dos)(?: opcion| hora)?",
        r"segund[oa]",
        r"b\Z",
    ),
    phrases(
        r"(?:the )?(?:third|3 ?rd)(?: one| option| slot| time| choice)?(?! (?:week|of(?! (?:those|these|them|the "
        r"(?:two|three|four|ones|times|options|slots|lot|bunch))\b)))",
        r"(?:option|number|choice|slot|opcion|numero|#) ?(?:3|three|c|tres)",
        r"(?:la|el) (?:tercer[oa]?|3|3ra)(?: opcion| hora)?",
        r"tercer[oa]",
        r"c\Z",
    ),
    phrases(
        r"(?:the )?(?:fourth|4 ?th)(?: one| option| slot| time| choice)?(?! (?:week|of(?! (?:those|these|them|the "
        r"(?:two|three|four|ones|times|options|slots|lot|bunch))\b)))",
        r"(?:option|number|choice|opcion|numero) ?(?:4|four|d|cuatro)",
        r"(?:la|el) cuart[oa]",
    ),
)
_FIRST_OF_ALL = phrases(
    r"(?:how|what|when|call|talk|speak|ask|check|know|see|think|pick|drop|take|feed|get|grab|finish|eat|go)"
    r" (?:\w+ ){0,6}first\Z",
    r"(?:cuanto|que|como|donde|saber|ver|habl\w+|llam\w+|diga\w*|dime|pregunt\w+|checar) (?:\w+ ){0,6}primero\W*\Z",
    r"primero (?:que nada|quiero|dime|digan\w*|cuanto|que)(?: \w+)*",
)
_THE_OTHER = phrases(r"the other(?: one| time| slot| day| option)?", r"(?:la|el) otr[oa]")
_THE_REST = phrases(
    r"(?:the |all )?others? (?:two|2|three|3|ones?|times?|days?|slots?)",
    r"the (?:others|rest)",
    r"any of the others?",
    r"(?:las|los) otr[oa]s(?: dos| tres)?",
)
_MIDDLE = phrases(
    r"(?:the )?middle(?: one| option| time)?", r"(?:la|el) (?:de|del) (?:en ?)?medio", r"(?:la|el) del centro"
)
_NEXT_ONE = phrases(
    r"(?:the )?(?:next|following) one after", r"(?:el|la) (?:que sigue|siguiente) (?:de|despues|al?)\w*"
)
_NUMBER_LIST = re.compile(
    r"(?:number |option |# ?|la |el |opcion )?(\d) ?(?:or|and|o|y|&|/) ?(?:number |option |# ?|la |el )?(\d)"
)
_LAST = phrases(
    r"(?:the )?(?:last|latter|final)(?: one| option| slot| time| choice)?(?! (?:time (?:i|you|we)|"
    r"week|month|thing|year|visit|appointment|service|trip))",
    r"(?:la|el) ultim[oa]",
    r"ultim[oa] opcion",
    r"bottom one",
)
_FORMER = phrases(r"(?:the )?former", r"top one")
_EARLIEST = phrases(
    r"(?:the )?(?:earlier|earliest|soonest|sooner)(?: one| time| slot| option| of the two|"
    r" the better| is better| works)?",
    r"(?:la|el|lo) mas (?:tempran(?:o|a|ito)|pront(?:o|a|ito)|cercan[oa])(?: posible)?",
    r"mas temprano",
    r"(?:la|el) (?:de )?tempran(?:a|o|ito|ita|era|ero)",
    r"early(?: bird)? one",
)
_LATEST = phrases(
    r"(?:the )?(?:later|latest)(?: one| time| slot| option| of the two| is better| works)",
    r"later\Z",
    r"(?:la|el|lo) mas tarde",
    r"mas tarde\Z",
    r"late one",
)
_OTHER_TIME = phrases(
    r"(?:anything|something|any|nothing|somewhat|little|bit|is there|an|hour|minutes|come|"
    r"do) (?:\w+ )?(?:earlier|later|sooner)",
    r"(?:algo|hay|nada|un poco|hora) (?:\w+ )?mas (?:tarde|temprano)",
)
_BARE_NUMBER = whole(
    r"(?:ok |yes |yeah |si |the |number |#|option |la |el |yep |sure |i pick |ill take |ill do |"
    r"let us do |lets do |i choose |opcion |numero |gimme |give me |ill go with |go with |dame |deme )*(?P<number>\d|"
    r"one|two|three|four|una?|uno|"
    r"dos|tres|cuatro)(?: please| works| is (?:good|fine|best|great|perfect|better)| por favor|"
    r" thanks| gracias| good| esta bien| it is| (?:my )?(?:guy|man|friend|dude|boss|chief|bro|brother|buddy|sir|maam|"
    r"bud|pal|dear|amigo|"
    r"jefe|compa|carnal))*"
)
_NUMBERS = {"one": 1, "two": 2, "three": 3, "four": 4, "un": 1, "una": 1, "uno": 1, "dos": 2, "tres": 3, "cuatro": 4}


_PLACE_ALONE = re.compile(
    r"(?:ok |si |yes |sure )*(?:the |la |el )(?:first|second|third|primer[oa]?|segund[oa]|tercer[oa]?)\b"
    r"(?! (?:of|de|week|day))"
)
"""A place in the list that also reads as a day of the month."""


_CORRECTED = re.compile(
    r"\b(?:sorry|oops|wait|i meant?|scratch that|actually|make that|no mejor|no, mejor|mejor|digo|perdon|quise decir)\b"
)
_CLAUSES = re.compile(r"[.,;!?]|\b(?:but|pero|y|and)\b")
_REFUSED = re.compile(
    r"\b(?:wont|doesnt|does not|will not|cant|not|isnt|no (?:good|me|puedo|se puede|sirve|va|quiero)|"
    r"imposible|is out)\b"
)
_LEADING_NUMBER = re.compile(
    r"(?:ok |si |yes |sure |mejor |quiero |prefiero |the )*(?:la|el|number|option|opcion|#) ?(?P<number>\d)"
    r"(?=\Z|[,.!]| y | and | por favor| please| pls)(?! y (?:media|cuarto|\d))"
)


@dataclass(frozen=True)
class Pick:
    """What a text says of the offered times."""

    named: tuple[datetime, ...] = ()
    """The offers that it fits, as listed."""
    is_open: bool = False
    """Any of them suits."""
    ruled_out: tuple[datetime, ...] = ()
    is_none: bool = False
    """All of them are ruled out at once."""
    near: datetime | None = None
    """The offer on whose day another hour is wanted (`the second one, but at 10`)."""
    is_too: bool = False
    """What was offered is too early or too late."""
    beyond: TimeWindow | None = None
    """What is wanted of the day of the one offer that is named: a later or an earlier hour (`the first but later`)."""


def pick_offers(plain: str, read: Read, setting: Setting, offers: tuple[datetime, ...], zone: str) -> Pick:
    """What a plain text says of the offered times; nothing where nothing was offered."""
    if not offers:
        return Pick()
    wanted = [choice for choice in read.choices if not choice.is_negated]
    ruled_out = [choice for choice in read.choices if choice.is_negated]
    out = tuple(offer for offer in offers if any(_fits(choice, offer, setting, zone) for choice in ruled_out))
    is_none = bool(_NONE.search(plain))
    refused = _places_refused(_as_corrected(plain), len(offers))
    if len(refused) == 1 and len(offers) == 2 and not wanted and _THE_OTHER.search(plain):
        return Pick(tuple(offer for place, offer in enumerate(offers) if place not in refused))
    is_one_out = 0 < len(out) < len(offers)
    if is_none and not wanted and not refused and not is_one_out:
        return Pick(is_none=True)
    plain = _as_corrected(plain)
    if refused and not wanted:
        return Pick(ruled_out=tuple(offers[place] for place in refused))
    if _TOO.search(plain) and not (ruled_out and wanted):
        is_of_the_day = all(choice.day is None and not isinstance(choice.time, Hours) for choice in wanted)
        is_alone = is_of_the_day or all(
            any(_fits(choice, offer, setting, zone) for offer in offers) for choice in wanted
        )
        if is_alone:
            return Pick(is_too=True)
    if _ALL_OF_TWO.search(plain):
        return Pick(offers, is_open=True)
    named = tuple(offer for offer in offers if any(_fits(choice, offer, setting, zone) for choice in wanted))
    by_place = _by_place(plain, offers, bool(named) or (bool(wanted) and not _PLACE_ALONE.match(plain)))
    if by_place and (
        not wanted or _BARE_NUMBER.match(plain.strip(" .!,")) or _NUMBER_LIST.fullmatch(plain.strip(" .!,?"))
    ):
        named = tuple(offer for offer in offers if offer in named or offer in by_place)
    if not named and not is_none:
        named = _by_leading_number(plain, offers)
    if len(named) > 1 and _NEXT_ONE.search(plain):
        named = named[:1]
    if out and not wanted and _THE_REST.search(plain):
        return Pick(tuple(offer for offer in offers if offer not in out))
    if not wanted and not named and not is_none and _EITHER.search(plain):
        return Pick(tuple(offer for offer in offers if offer not in out), is_open=True, ruled_out=out)
    if _EITHER.search(plain) and (len(named) > 1 or (wanted and len(named) == len(offers))):
        return Pick(named, is_open=True)
    one_only = named if len(named) == 1 else offers if len(offers) == 1 else ()
    beyond = _beyond(plain, one_only[0], setting, bool(named)) if one_only else None
    if beyond:
        return Pick(beyond=beyond)
    near = [offers[n] for n, one in enumerate(_PLACES) if n < len(offers) and wanted and one.search(plain)]
    return Pick(named, ruled_out=out, near=near[0] if len(near) == 1 and not named else None)


_BUT = re.compile(
    r"\b(?:but|just|only|except|though|pero|nomas|solo)\b(?: (?!at\b|by\b|than\b)\w+){0,4}? "
    r"(?:(?P<later>later|mas tarde)|(?P<earlier>earlier|sooner|mas temprano))\b"
    r"(?! (?:one|time|slot|the|is|works?|on\b|that week|in the (?:week|month)))(?=[^\d]*$)"
)
_BY_SO_MUCH = re.compile(
    r"\b(?P<count>half an|an?|one|two|three|\d{1,2}|media|una|dos) (?P<unit>hours?|hrs?|minutes?|mins?|horas?|"
    r"minutos?) "
    r"(?P<way>later|earlier|sooner|mas tarde|mas temprano)\b(?=[^\d]*$)"
)
_SO_MANY = {"half an": 0.5, "media": 0.5, "two": 2, "three": 3, "dos": 2}


def _beyond(plain: str, offer: datetime, setting: Setting, is_named: bool) -> TimeWindow | None:
    """The hours before or after an offer that are wanted in its place, or its start moved by what is told."""
    so_much = _BY_SO_MUCH.search(plain)
    if so_much:
        told = so_much["count"]
        count = float(told) if told.isdigit() else _SO_MANY.get(told, 1)
        distance = timedelta(minutes=count * (60 if so_much["unit"].startswith("h") else 1))
        return point(offer + distance if so_much["way"] in ("later", "mas tarde") else offer - distance)
    but = _BUT.search(plain)
    hours = setting.hours.on(offer.date())
    if not but or not is_named or not hours:
        return None
    midnight = datetime.combine(offer.date(), time())
    first, last = (midnight + timedelta(minutes=minute) for minute in hours)
    start, end = (offer, last) if but["later"] else (first, offer)
    return TimeWindow(start=iso(start), end=iso(end), grain="part") if start < end else None


def _as_corrected(plain: str) -> str:
    """What stands after `sorry, I meant` where that names a place in the list; else the whole."""
    parts = _CORRECTED.split(plain)
    return parts[-1] if len(parts) > 1 and any(pattern.search(parts[-1]) for pattern in _PLACES) else plain


def _places_refused(plain: str, many: int) -> list[int]:
    """The places in the list that a clause rules out (`the first one won't work`), where no other is named."""
    clauses = [clause for clause in _CLAUSES.split(plain) if clause.strip()]
    named = [(place, clause) for clause in clauses for place in range(many) if _PLACES[place].search(clause)]
    refused = [place for place, clause in named if _REFUSED.search(clause)]
    return refused if len(refused) == len(named) else []


def _by_leading_number(plain: str, offers: tuple[datetime, ...]) -> tuple[datetime, ...]:
    """`la 3 y espero ahi`: a number at the head that is no hour of an offer, but a place in the list."""
    match = _LEADING_NUMBER.match(plain)
    number = int(match["number"]) if match else 0
    return (offers[number - 1],) if 1 <= number <= len(offers) else ()


def _fits(choice: Choice, offer: datetime, setting: Setting, zone: str) -> bool:
    """Whether an offer is what a choice names."""
    minute = offer.hour * 60 + offer.minute
    if choice.day is None and isinstance(choice.time, Hours):
        if choice.time.kind == "at":
            return minute in choice.time.first.minutes()
        span = setting.hours.on(offer.date()) or (0, 1440)
        return any(first <= minute < (last or 1440) for first, last in time_spans(choice.time, span))
    about = offer.date() if choice.day is None else None
    return any(overlaps(offer, entry) for entry in resolve(choice, setting, about, zone).windows)


def _by_place(plain: str, offers: tuple[datetime, ...], has_times: bool) -> tuple[datetime, ...]:
    """The offers named by their place in the list, as the first or last, or as the earlier or later one."""
    bare = _BARE_NUMBER.match(plain.strip(" .!,"))
    if bare:
        number = int(_NUMBERS.get(bare["number"], 0) or (bare["number"] if bare["number"].isdigit() else 0))
        return (offers[number - 1],) if 1 <= number <= len(offers) else ()
    listed = _NUMBER_LIST.fullmatch(plain.strip(" .!,?"))
    if listed and all(1 <= int(number) <= len(offers) for number in listed.groups()):
        return tuple(offers[int(number) - 1] for number in listed.groups())
    if has_times:
        return ()
    if _MIDDLE.search(plain) and len(offers) % 2:
        return (offers[len(offers) // 2],)
    if _FIRST_OF_ALL.search(plain):
        return ()
    places = [n for n, pattern in enumerate(_PLACES) if n < len(offers) and pattern.search(plain)]
    if places:
        return tuple(offers[n] for n in places)
    if _LAST.search(plain):
        return (offers[-1],)
    if _FORMER.search(plain):
        return (offers[0],)
    if _OTHER_TIME.search(plain):
        return ()
    if _EARLIEST.search(plain):
        return (min(offers),)
    return (max(offers),) if _LATEST.search(plain) else ()
