"""`running_late`: the customer is on the way but late for the booking that stands."""

from __future__ import annotations

from followup.core.replies.said import Said, phrases

CODE = "running_late"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "running 10 late",
        "stuck in traffic be there in 20",
        "gonna be like 15 min late sry",
        "omw, runnin behind",
        "im late, overslept",
    ),
    "es": (
        "voy 10 minutos tarde",
        "se me hizo tarde",
        "estoy en el trafico, llego en 20",
        "voy en camino pero retrasado",
        "llego como 15 min tarde",
    ),
}

_SAYS = phrases(
    r"run+in?g? (?:\w+ ){0,5}(?:late|behind)",
    r"(?:be|im|i am|were|gonna be|arriv\w+|there|but|little|bit|sorry|tad|coming in|show up|"
    r"getting there|get there|come) (?:(?:a|about|around|like|few|couple|of|\d+|to|or|half|an|"
    r"hour|ten|five|fifteen|twenty|thirty|min|mins|minutes|so|maybe|probably|little|bit|tad|hr|"
    r"hours|going to be|just|super|really|already|running) ){0,7}late(?! (?:afternoon|morning|"
    r"evening|in the|for that|fee|to the party|next|this|monday|tuesday|march|spring))",
    r"late by \d+",
    r"\d+ ?(?:min\w*)? late",
    r"^late\Z",
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
    r"(?:\d+|diez|cinco|quince|veinte) min\w* (?:tarde|mas|de retraso)",
    r"me quede dormid[oa]",
    r"tarde (?:unos|como|por) \d+",
)


def holds(said: Said) -> bool:
    """Whether the customer comes late to a booking that stands."""
    return said.has_booking and bool(_SAYS.search(said.text) or _DICE.search(said.text))
