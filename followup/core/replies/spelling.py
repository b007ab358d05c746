"""Mending of typing errors in the words that matter, and of missing spaces between them."""

from __future__ import annotations

import re
from functools import lru_cache

from followup.core.replies.near_words import NearWords, osa_distance
from followup.core.replies.usual_words import BESIDE, usual
from followup.core.replies.words.english import ENTRIES as ENGLISH
from followup.core.replies.words.entry import word_set
from followup.core.replies.words.spanish import ENTRIES as SPANISH

_TARGETS = {
    "en": tuple(
        sorted(
            word_set(
                "monday tuesday wednesday thursday friday saturday sunday january february march april june july august"
                " september october november december today tomorrow tonight morning afternoon evening"
                " night weekend week"
                " month noon before after around between later earlier thanksgiving christmas tuesdays saturdays"
                " unsubscribe cancel reschedule appointment message messages texting brakes brake steering smoke"
                " smoking vibration vibrating shaking noise grinding squealing leaking already number"
                " wrong person please"
                " interested thanks mileage odometer loaner shuttle price perfect sounds works change different another"
                " complaint manager removed remove stopped working second third first finished going until starting"
                " wobbles wobbling overheating transmission rattling clunking clicking headlights battery engine"
                " quarter fortnight midday twenty thirty eleven twelve independence halloween valentines fifteen oclock"
                " weekday lunchtime whenever available soonest problem problems question everything awesome wonderful"
                " absolutely definitely confirmed overheating estimate receipt driveway mechanic dealership insurance"
                " accident traffic pickup waiting schedule"
            )
        )
    ),
    "es": tuple(
        sorted(
            word_set(
                "lunes martes miercoles jueves viernes sabado domingo enero febrero marzo abril junio julio agosto"
                " septiembre octubre noviembre diciembre manana tarde noche semana proxima proximo"
                " mediodia despues antes"
                " temprano cancelar cambiar gracias mensajes mensaje frenos llanta llantas humo ruido"
                " vibra vendi numero"
                " equivocado equivocada kilometros millas perfecto prefiero quiero puedo cuanto cuesta"
                " llamenme necesito"
                " hasta entre tambien segunda primera ultima agendar arranca volante derrama direccion"
                " temperatura transmision alambre quitenme saquenme borrenme"
                " treinta quince mediodia almuerzo disponible problema problemas confirmado confirmo gerente mecanico"
                " rechina rechinan rechinando molesten molestando presupuesto cotizacion domicilio ubicacion camioneta"
                " trabajo trafico llegando retrasado accidente bateria aceite temperatura"
            )
        )
    ),
}
_NEVER = word_set(
    "junk merging meaning marking writing wanting wording vending violation violating compliant complying brace braces "
    "engineer"
    " wherever remote monty latex layer untie awaiting differing instance scheduler"
    " battling scrapping clocking tricking cracking licking battering"
    " squeezing squeezed squeeze squeezes freaking streaming speaking sneaking"
    " money matches match marsh mach marches month mouth moth months soon moon noun neon might light right fight sight"
    " tight eight weight weak weed meek seek weeks cheek wheel wheels west beak peak nest smock smile smart spoke"
    " spoken launch lunch bunch latter lather water waiter ladder alter altered otter later rather letter mourning"
    " warning learning pricy prize pride pries pricey please pleased pleases place places work worked worker words"
    " world worth sound sounded round around ground bound found wound break breaks broke broken brake braked bakes"
    " rakes braking breaking shaky shake shakes shared sharing taking making waking baking noisy nose noises poise"
    " leak leaks leaky lacking looking locking licking going doing gong goring charge changed changes chance strange"
    " range orange person persons personal personally parson prison poison second seconds reason season thirst first"
    " fist firsts thread tread treads third thirds bird turn tire tires tried wrote wrung wring strong throng number"
    " numbers member members lumber umber under sunday sundae sunny funday moody monkey mondays tuesdays wednesdays"
    " thursdays fridays sundays fried fry fridge stay stray start starts started starting starring staring steering"
    " stirring steer string remove removed removes remover prove move moved moves cancer cancels canceled cancelled"
    " canceling cancelling candle channel camel interest interests interesting interested different difference"
    " another mother other brother bother and amount before berate after alter offer officer aftermath always"
    " already ready read reads early yearly nearly dearly clearly mark marks marked market marry marvel mars harsh"
    " march marched augur just must august june jane jute dune tune jury july fully bully juicy april apron apply"
    " apple noon nook nine none nope today stopped shopped stepped dropped swapped stop shop shops step steps"
    " drop drops messages massage massages texting testing tasting resting nesting texted working walking waking"
    " worked finished finish finishing furnished until unit unlit shuttle subtle settle shuttled loaner loader loner"
    " loan loans manager managed manage managers pleasing smoking choking smoke stoke between sometime whether weather"
    " mechanic service there three these those where were here thanks tanks thank thinks prefect perfectly protect"
    " works wears words forks work sorts earlier earliest easier carrier barrier around arrange grinding grounding"
    " grind binding finding winding squeaking squealing squeal complain complaint complained complaints weekend"
    " weekends weekly weekday weekdays night nights knight evening evenings eleven even events person message"
    " lane lines line lone lanes limes tires marte partes cartas cartes martes antes gente gentes entes tanto tantas"
    " tarda tardes tardo tarjeta tarea carde parte parde padre nochi coche coches noche noches chance semanal semanas"
    " semilla manzana montana ventana hermana mananas frenar frenas freno frenan frenado frenada llamada llama llamas"
    " llamen llanto llenar llena lleno llantas llaman llame humor humano ruda rudo ruidos ruedo rueda vibro vibrar"
    " vende vendo vender venia venir vino numeros nuevo numero ambiar cambiar cambia cambie cambio cambios cansar"
    " cancela cancele cancelen cancelo cancelado cancelada quero quiere quieres quieren quiero puede puedes pueden"
    " puedo pudo pueda puedan cuando cuanto cuanta cuantas cuantos canto cuesta cuestan cuestas cuento cuenta cuentas"
    " encuentra presta resta costa costo necesita necesitan necesitas necesito hasta hacia hayan basta pasta gasta"
    " hasta entra entro entrar centro entre entregar tambien tampoco bien primer primera primero ultimo ultima"
    " segundo segunda segun arranco arranque arrancar arrancan volante volver volando abril abrir abren abre abra"
    " junto justo juntos julio junio enero dinero febrero marzo marco mayor mayo menos mensaje mensual lunas lunes"
    " luces luego juegos jueves nueves nueve domingo dominga sabado sabados saldo pasado pesado proxima aproxima"
    " perfecta perfecto efecto agenda agendar agendo prefiera prefiere prefiero direcciones directo direccion tengo"
    " seating standing leaving speaking seeking showing skating percent bake treating staying prime "
    "pleas earning topped"
    " noone tose sake kick gods rocks whatsit mumble grumble cambiara quieto mario conformo cesta lager worms"
    " telling letting leading leaning peaking shaving sharing shaming staking snaking grinning "
    "griping prince prick judy"
    " jude blake christian smoker finishes stalling stalls stalled whirring gauge blowing dialing selling scaring"
    " spelling filling stealing healing dealing sealing marcha tocando orden ordenar vuelta suelta cuelga brinca"
    " latch hatch catch patch wont went want thirsty quartet quarters"
    " lease leased ease marca marcan marcar marco latch hatch"
    " leasing leashing blue blues"
    " hubo hubiera tuvo cubo tubo tenga antier ante unos una tiene tienen gracia gracioso temprana despide standing "
    "stating"
)
"""Words of their own that stand near a target, and must never be taken for it."""

_KNOWN = {
    "en": frozenset(word for entry in ENGLISH for word in entry.phrase),
    "es": frozenset(word for entry in SPANISH for word in entry.phrase),
}
_SHORTEST = 4
_CLITICS = word_set("me te se la lo las los le les nos")
"""What hangs on a Spanish infinitive: `cambiarla` is one word."""
_ENDINGS = word_set("s es on ron ndo do da dos das ba ban n ste mos ing ed er ers ly me lo la los las le se nos")
"""What a regular form adds to a word; it is no typing error then."""


_TIME_WORDS = {
    category: frozenset(entry.phrase[0] for entry in (*ENGLISH, *SPANISH) if entry.category == category)
    for category in ("weekday", "month", "relday", "part")
}
_TWO_ERRORS = frozenset(word for words in _TIME_WORDS.values() for word in words if len(word) >= 7)


_SOUNDS = tuple(
    (re.compile(pattern), sound)
    for pattern, sound in (
        ("ch", "x"), ("h", ""), ("v", "b"), ("z|c(?=[eiy])", "s"), ("qu(?=[ei])|k", "c"), ("ll", "y"),
        ("g(?=[ei])", "j"), ("gu(?=[ei])", "g"), (r"([^r])\1", r"\1"),
    )
)  # fmt: skip
"""What sounds alike in Spanish and is written one for the other (`biernes`, `savado`, `onse`)."""


def as_heard(word: str) -> str:
    """The word as it sounds: the same for what Spanish ears confuse."""
    for pattern, sound in _SOUNDS:
        word = pattern.sub(sound, word)
    return word


_HEARD = word_set(
    "lunes martes miercoles jueves viernes sabado domingo enero febrero abril julio agosto septiembre octubre "
    "noviembre",
    "diciembre manana noche proxima proximo mediodia despues cancelar cambiar gracias mensajes llanta llantas humo",
    "vendi equivocado kilometros millas necesito llamenme hasta primera ultima arranca volante quince once doce trece",
    "catorce cinco siete nueve diez veinte ahorita ahora llego llegar voy vamos abierto abiertos cerrado hoy hora "
    "horas",
    "llevo llevar hacer hizo hicieron vez veces servicio carro coche troca camioneta blanca blanco azul llave llaves",
    "aceite ayer hace quiero quien cuando cuanto aqui que porque bueno buenas luego joven escriban escribir borren",
)
_BY_EAR = {as_heard(word): word for word in sorted(_HEARD)}


def _allowed_errors(target: str) -> int:
    """Two errors only in long words and in names of days and parts of the day, which few other words resemble."""
    return 2 if target in _TWO_ERRORS or len(target) >= 9 else 1


@lru_cache(maxsize=2)
def _near_words(language: str) -> NearWords:
    return NearWords(_TARGETS[language])


@lru_cache(maxsize=16384)
def mended(word: str, language: str) -> str:
    """The word, or the word of our lists that it was surely meant to be; two words where only the space is missing."""
    if len(word) < _SHORTEST or len(word) > 20 or word in _KNOWN[language] or word in _NEVER:
        return word
    if word in _TARGETS[language] or word in _KNOWN["es" if language == "en" else "en"]:
        return word
    heard = _BY_EAR.get(as_heard(word)) if language == "es" else None
    if heard:
        return heard
    if language == "es" and usual("en").is_often(word):
        return word
    parted = _parted(word, language)
    if parted:
        return parted
    likely = [
        (distance, target)
        for distance, target in _near_words(language).near(word, 2 if len(word) > 6 else 1)
        if distance <= _allowed_errors(target) and _begins_alike(word, target) and not _is_inflection(word, target)
    ]
    return min(likely)[1] if likely else _usual(word, language)


@lru_cache(maxsize=1)
def _often_by_ear() -> dict[str, str]:
    """The frequent Spanish words by their sound, the most frequent of those that sound alike."""
    found: dict[str, str] = {}
    for word in usual("es").often:
        if len(word) >= _SHORTEST:
            found.setdefault(as_heard(word), word)
    return found


def _usual(word: str, language: str) -> str:
    """The word, or the usual words of replies that it was meant to be where it is none of either language."""
    held = usual(language)
    if word in held.words or word in usual("es" if language == "en" else "en").words:
        return word
    if language == "es":
        heard = _often_by_ear().get(as_heard(word))
        if heard:
            return heard
    return held.near(word) or held.parted(word) or word


_NO_KEYWORDS = word_set("subscribe resubscribe unstop start restart empezar alta")
"""Keywords of the consent given again."""
_LONE_KEYWORDS = ("stop", "stopall", "unsubscribe", "cancel", "cancelar", "alto", "baja", "parar", "basta", "salir")


@lru_cache(maxsize=1024)
def lone_keyword(word: str) -> str:
    """The keyword that a word, the whole of a text, was meant to be: one slip, or two where it is long.

    Here the first letter may be wrong too, since a stop is not to be missed; frequent words stay, and so does one that
    differs by a key that is not beside.
    """
    if (
        word in _NEVER
        or word in _NO_KEYWORDS
        or any(usual(one).is_often(word) or word in _KNOWN[one] for one in ("en", "es"))
    ):
        return word
    for keyword in _LONE_KEYWORDS:
        errors = osa_distance(word, keyword)
        if errors <= (1 if len(keyword) < _LONG_KEYWORD else 2) and all(
            letter in BESIDE[meant] + meant or len(word) != len(keyword) or sorted(word) == sorted(keyword)
            for letter, meant in zip(word, keyword, strict=False)
        ):
            return keyword
    return word


_LONG_KEYWORD = 8


def _begins_alike(word: str, target: str) -> bool:
    """Typing errors rarely fall on the first letter; swapped first letters are let through in long words."""
    if word[0] == target[0]:
        return True
    return len(target) >= 6 and (word[:2] == target[1::-1] or word == target[1:])


def _is_inflection(word: str, target: str) -> bool:
    """Whether the word is a regular form of the target and so no typing error."""
    if target.endswith("s") and word == target + "s":
        return False
    if word.startswith(target) and word[len(target) :] in _ENDINGS:
        return True
    return word in {target + "s", target + "d", target + "ed", target + "er", target + "ly", target[:-1] + "ing"}


def _parted(word: str, language: str) -> str | None:
    """A day's name that runs into the next word without a space, parted: `tuesdaymorning`."""
    for cut in range(len(word) - 2, 5, -1):
        head, tail = word[:cut], word[cut:]
        if (
            head in _TARGETS[language]
            and tail in _KNOWN[language]
            and len(tail) > 1
            and tail not in ("of", "an", "all", "us")
            and not (head.endswith("ar") and tail in _CLITICS)
        ):
            return f"{head} {tail}"
    return None
