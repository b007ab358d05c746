"""`running_late`: the customer is on the way but late for the booking that stands."""

from __future__ import annotations

import re

from followup.core.replies.said import Said, phrases

CODE = "running_late"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "running 10 late", "stuck in traffic be there in 20", "gonna be like 15 min late sry", "omw, runnin behind",
        "im late, overslept", "be there in 10", "traffic is nuts", "ill be a lil late", "few minutes behind",
        "10 mins out", "on my way just got a late start", "leaving now sorry", "train stopped me, be there soon",
        "gonna be 30 min late", "might be late 15 min", "hit every red light, 5 min", "im coming just slow traffic",
        "sorry im running a bit late", "half hour late ok?", "kids made me late", "on the way now", "eta 20 min",
        "almost there", "pulling in soon, running late", "held up at work be there by 930", "be about 10 late",
        "running behind schedule", "im stuck behind an accident", "on my way, 15 out", "late start, there by 930",
        "sorry leaving the house now", "gonna be 20 late", "just left", "im 10 minutes away",
    ),
    "es": (
        "voy 10 minutos tarde", "se me hizo tarde", "estoy en el trafico, llego en 20",
        "voy en camino pero retrasado", "llego como 15 min tarde", "ya voy pa alla", "voy llegando",
        "ahorita llego, hay trafico", "me agarro el tren", "ya mero llego", "llego en 5",
        "voy a llegar un poquito tarde", "disculpen voy atrasado", "me dormi, voy saliendo", "ya voy en camino",
        "en 10 min estoy ahi", "voy retrasada media hora", "hay mucho trafico",
        "se me hizo un poco tarde pero ya voy", "voy tarde perdon", "estoy a 15 minutos",
        "llego mas tarde, como 20 min", "me atrase con los ninos", "apenas voy saliendo de la casa",
        "ando atorado en el freeway", "llegare 30 min tarde", "voy retrasado 10 minutos", "perdon ya voy",
        "voy a llegar tarde", "como 15 minutos mas", "apenas voy saliendo",
        "hay un choque en el freeway, llego tarde", "me demoro 10 min", "ya estoy cerca",
    ),
}  # fmt: skip

_SAYS = phrases(
    r"(?:gps|maps?|phone|navi|waze) (?:says|said|shows|has me)(?: \w+)?",
    r"late by an?(?: \w+)?",
    r"just left(?! (?:a|the|my|you))",
    r"more like \d+",
    r"not (?:gonna|going to) make (?:it )?(?:by )?\d+(?: \w+){0,3}",
    r"(?:be |will be |im |got |get )?(?:there|here|over) (?:in|by|at|around|about) (?:about |like |around "
    r"|a |an |\d+|ten|five|fifteen|twenty|thirty|half|few|couple)",
    r"(?:few|couple|\d+|five|ten|fifteen|little|bit|tad) (?:of )?(?:min\w* |mins )?(?:behind|late)",
    r"(?:a )?little late",
    r"(?:half )?(?:an )?hour late",
    r"(?:made|making|makes|got|have) me (?:\w+ )?late",
    r"eta\b(?: \w+)*",
    r"(?:im|we are|were|i am) (?!not\b|still\b)(?:\w+ )?coming(?! (?:at|on|by|tomorrow|in (?:on|at|"
    r"monday|tuesday|friday|"
    r"thursday)))",
    r"(?:slow|crazy|nuts|bad|insane|heavy|stuck|awful) traffic",
    r"traffic(?: \w+){0,3} (?:is|was|nuts|crazy|bad|insane|backed)",
    r"(?:leaving|left) (?:now|the house|home|work|here)",
    r"hit (?:\w+ ){0,2}(?:red light|traffic)",
    r"(?:train|traffic|accident|bridge|cop|boss) (?:is |has |was |stopped |got |blocking |blocked |kept "
    r")+(?:\w+ ){0,2}me",
    r"pulling in",
    r"(?:might|may|could|gonna|going to|will) be (?:\w+ )?late",
    r"run+in?g? (?:\w+ ){0,5}(?:late|behind)",
    r"(?:be|im|i am|were|gonna be|arriv\w+|there|but|little|bit|sorry|tad|coming in|show up|"
    r"getting there|get there|come) (?:(?:a|about|around|like|few|couple|of|\d+|to|or|half|an|"
    r"hour|ten|five|fifteen|twenty|thirty|min|mins|minutes|so|maybe|probably|little|bit|tad|hr|"
    r"hours|going to be|just|super|really|already|running) ){0,7}late(?! (?:afternoon|morning|"
    r"evening|in the|for that|fee|to the party|next|this|monday|tuesday|march|spring))",
    r"late by \d+",
    r"\d+ ?(?:min\w*)? late",
    r"^late\Z",
    r"^(?:a bit |bit |little |so |very |sorry |running )*late(?: sorry)?(?=,)",
    r"^late sorry",
    r"(?:stuck|sitting|caught) (?:in|behind) (?:\w+ )?(?:traffic|a train|accident)",
    r"(?:bad|heavy|terrible|lots of|so much|hit|crazy|traffic) traffic",
    r"traffic (?:is|jam|sucks)",
    r"on (?:my|our|the) way",
    r"omw",
    r"(?:be )?there in (?:about |like |around |a |\d|ten|five|fifteen|twenty|thirty|half)",
    r"(?:\d+|ten|five|fifteen|twenty) ?(?:min\w*) (?:away|out|behind)",
    r"overslept",
    r"woke up late",
    r"almost there",
    r"(?:be there|see you) (?:soon|shortly)",
    r"(?:few|couple|\d+|five|ten) (?:more )?min\w* (?:more|longer)",
    r"give me (?:\d+|five|ten|a few|another \d+) (?:more )?min\w*",
    r"delayed",
    r"held up",
    r"leaving (?:now|work now|my house|in \d+)",
    r"behind schedule",
)
_DICE = phrases(
    r"(?:ya )?(?:estoy|ando|voy) cerca",
    r"llego (?:\w+ )?(?:a las |como a las |\d+ y )\d*(?: \w+)?",
    r"ya casi (?:llego|llegamos|estoy)",
    r"(?:ya )?(?:voy|vamos|ando) (?:para|rumbo|hacia) (?:alla|ya|ahi|el taller)",
    r"me agarro el (?:tren|trafico|semaforo)",
    r"(?:me|nos) (?:dormi|quede dormid|atras|demor|tard|retras|atore|ator)\w*",
    r"(?:voy|apenas voy|vamos) saliendo",
    r"en (?:\w+ )?(?:\d+|diez|cinco|quince|veinte|media hora|un rato|ratito) (?:min\w* )?(?:estoy|llego|"
    r"voy|ando|estamos|llegamos)",
    r"estoy a (?:\w+ )?(?:\d+|diez|cinco|quince|veinte|unos) (?:\w+ )?(?:min\w*|cuadras|millas)",
    r"(?:ando|estoy|voy) (?:\w+ )?(?:atorad|atascad|metid|parad)[oa] en (?:el|la) (?:\w+ )?(?:freeway|"
    r"trafico|autopista|calle|carretera|tren|tranque)",
    r"ahorita (?:llego|voy|estoy ahi)",
    r"(?:voy|vamos|llego|llegare|llegar|ando|llegando|llegamos|estoy) (?:\w+ ){0,6}(?:tarde|"
    r"retrasad[oa]s?|demorad[oa]s?|atrasad[oa]s?|tardecito)(?! (?:en la|por la|de la))",
    r"(?:se me|se nos) (?:esta haciendo|hizo|hace) (?:un poco |muy )?tarde",
    r"(?:retras|demor|atras)(?:ad[oa]s?|e|o|ando)",
    r"(?:trafico|embotellamiento|tranque|atasco|trancon)",
    r"(?:voy|vamos|ya) (?:\w+ )?en camino",
    r"en camino",
    r"ya (?:mero )?(?:voy|vamos)(?! a)(?: (?:llegando|saliendo|para alla))?\Z",
    r"ya mero llego",
    r"(?:llego|estoy(?: ahi| alla)?|llegare|voy llegando) en (?:\w+ )?(?:\d+|unos|diez|cinco|"
    r"veinte|quince|media)",
    r"(?:estoy|voy) llegando",
    r"(?:esper|aguant)\w*(?:nme|eme|ame|en|e) (?:\w+ )?(?:tantito|poquito|un poco|un ratito|\d+)",
    r"guard\w*me (?:el|mi) (?:lugar|turno|espacio|hora)",
    r"(?:un )?po(?:co|quito|quitito) tarde",
    r"tardo (?:\w+ )?\d+",
    r"(?:otros|unos|como|dame|denme|deme) (?:\w+ ){0,2}\d+ (?:min\w*|mas)",
    r"\d+ mas\Z",
    r"llego (?:como )?(?:a las )?\d+:\d\d",
    r"me tiene (?:\w+ )?(?:trabad|atorad|parad|detenid)[oa]",
    r"(?:en el|hay) (?:tapon|taco|embotellamiento|choque)",
    r"(?:voy|vengo) volando",
    r"(?:\d+|diez|cinco|quince|veinte) min\w* (?:tarde|mas|de retraso)",
    r"me quede dormid[oa]",
    r"tarde (?:unos|como|por) \d+",
)


_LATE_ALONE = re.compile(
    r"(?:a |bit |little |so |very |sorry |im |we are |were |running |gonna be |going to be )*late(?: sorry)?"
)
_NOT_LATE = phrases(
    r"(?:flat|flat tire|tire|tires|blowout|blew|broke down|died)(?: \w+){0,3} (?:on|coming) (?:the|my) way(?: (?:to|"
    r"over|there|in)(?: \w+)?)?",
    r"(?:llevo|llevamos|tengo|tenemos) (?:ya |como |mas de |casi )*(?:\d+|media|una?|dos) (?:min\w*|horas?)(?: "
    r"\w+){0,3}",
    r"(?:been|still|was) (?:sitting|waiting|standing) (?:here|there|in)(?: \w+){0,4}",
    r"(?:told|asked|warned|cleared it with) (?:my|the) (?:boss|work|job|manager|supervisor|teacher)(?: \w+){0,6}",
)
"""Late for work because of the visit, or kept waiting by us."""


def holds(said: Said) -> bool:
    """Whether the customer comes late to a booking that stands."""
    if said.has_booking and any(_LATE_ALONE.fullmatch(part) for part in said.parts):
        return True
    plain = _NOT_LATE.sub(" ", said.text)
    return said.has_booking and bool(_SAYS.search(plain) or _DICE.search(plain))


_LATE = phrases(
    r"late",
    r"later?",
    r"behind",
    r"traffic",
    r"stuck",
    r"delay\w*",
    r"held up",
    r"overslept",
    r"woke",
    r"train",
    r"accident",
    r"min\w*",
    r"hours?",
    r"sorry",
    r"wait",
    r"tarde",
    r"retras\w*",
    r"demor\w*",
    r"atras\w*",
    r"trafico",
    r"dorm\w*",
    r"atorad\w*",
    r"perdon\w*",
    r"disculp\w*",
    r"esper\w*",
    r"tren",
    r"choque",
    r"\d+",
    r"media hora",
)


def tells_lateness(said: Said) -> bool:
    """Whether words or numbers say that the customer comes late, not merely that the customer comes."""
    return bool(_LATE.search(said.text))
