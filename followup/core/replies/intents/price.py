"""`price`: the customer asks what it costs."""

from __future__ import annotations

from followup.core.replies.said import Said, phrases

CODE = "price"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "how much", "whats it gonna cost me", "price?", "can i get a quote first", "what do u charge for brakes",
        "yes but how much is it", "ballpark?", "whats the damage", "how much we talkin", "whats that run",
        "got any deals", "is it free", "cost?", "what are ur prices", "how much for 4 tires", "total with tax?",
        "any discounts for seniors", "whats that gonna set me back", "estimate pls", "is there a charge",
        "how much would i be looking at", "do u price match", "whats ur labor rate", "is it expensive",
        "can u send me a price", "what would i owe", "how much will it cost", "price for brakes?",
        "what's the total", "quote please", "what do you charge", "cost", "how much is an oil change",
        "what would that be", "any coupons", "whats the price", "how much with tax", "is there a fee for that",
        "what are you charging", "what's the cost", "how much for both", "gimme a price", "whats the labor",
        "how much are we looking at", "any specials", "is there a charge for the inspection", "how much to fix it",
        "can i get an estimate", "what's your price on tires", "does it cost anything",
    ),
    "es": (
        "cuanto cuesta", "cuanto me sale?", "que precio tiene", "me da una cotizacion",
        "cuanto cobran por los frenos", "a como sale", "cuanto seria", "es gratis?", "que costo tiene",
        "cuanto me van a cobrar", "precio?", "tienen descuento", "cuanto es", "a cuanto el cambio de aceite",
        "como cuanto sale", "me puede dar precio", "en cuanto sale todo", "cuanto por las 4 llantas",
        "hay especiales", "cuanto tengo que pagar", "cobran por revisar?", "cual es el precio", "que tan caro es",
        "si pero cuanto", "cuanto vale el servicio", "cuanto sale", "que precio", "cuanto va a salir",
        "en cuanto me lo deja", "cuanto cobran", "cuanto es el total", "dan descuento?", "precio de las llantas",
        "cuanto me cuesta", "que cobran por eso", "cuanto me saldria", "que tan caro sale", "precio por favor",
        "cuanto por los dos", "me da un estimado", "cobran la revision?", "cuanto de labor",
    ),
}  # fmt: skip

_MONEY = (
    r"(?:pocket(?:book|s)?|wallet|purse|bank account|checking|budget|checkbook|savings|piggy bank|paycheck|credit card)"
)
_ASKS = phrases(
    r"(?:what|how much|whats)(?: \w+){0,4} out of (?:my )?pocket(?: \w+){0,3}",
    rf"how (?:deep|far|big|hard|heavy|badly|bad|much|steep|painful)(?: (?!tread|tire)\w+){{0,6}} {_MONEY}",
    rf"(?:dig|digging|reach|reaching|go|going|goin|be) (?:\w+ )?deep in(?:to)? (?:my|the) {_MONEY}",
    rf"(?:hurt|hit|dent|drain|empty|kill|wreck|clean out|stretch) (?:my|the|our) {_MONEY}",
    r"how many (?:dollars|bucks|hundreds|grand|thousands?|digits|figures|zeros|zeroes|paychecks|benjamins|dead "
    r"presidents|"
    r"smackers|clams)",
    r"(?:talking|talkin|looking at|closer to|more like|thinking|is (?:it|this|that)|in the|hundreds or|or) (?:about |"
    r"like )?"
    r"(?:the )?(?:hundreds|thousands|a few hundred|a couple hundred|a grand|(?:three|four|3|4) (?:figures|digits))",
    r"what (?:kind|sort|amount) of (?:money|cash|bill|number|damage|dollars?)(?: \w+){0,3}",
    r"how much (?:dough|cash|cheddar|moola|money)",
    r"what(?: is| are|s)?(?: \w+)? (?:tab|toll|sting|price tag|tariff|asking|final number|going rate|rates|bill) "
    r"(?:come to|be|gonna be|going to be|for|on|look|run)(?: \w+){0,3}",
    r"(?:take|need|have to take) (?:out )?a (?:\w+ )?(?:loan|mortgage)(?: \w+){0,3}\?",
    r"(?:sell|cost me|costs?) (?:a|my|an) (?:kidney|firstborn|arm)(?: \w+){0,3}",
    r"(?:is|will|would|gonna|going to) (?:it |this |that )?(?:be |gonna be |going to be )?(?:\w+ )?(?:pricey|spendy|"
    r"costly|dear)",
    r"(?:over|under|above|below|more than|less than|north of|south of) \$? ?\d[\d,]*(?: ?(?:bucks|"
    r"dollars))?,? or (?:over|under|"
    r"above|below|more|less|not|so)",
    r"what(?: is| would| will| does| s)? (?:it|that|this|they) (?:cost|costs|be for|run me)(?: \w+){0,3}",
    r"(?:give|shoot|gimme|throw) (?:me )?(?:a |the |some )?(?:number|figure|numbers|dollar amount)s?(?! (?:to|for "
    r"you|where|i))",
    r"(?:work|write|draw|price) (?:me )?(?:it |this |that )?(?:up|out) (?:a |an )?(?:quote|estimate|number|for me)",
    r"what(?: \w+){0,7} (?:go|goes|going|went) for(?! (?:me|you|us|a (?:drive|ride|walk)))",
    r"what(?: \w+){0,5} (?:come|comes|coming|add up|adds up|amount|amounts|ring up) (?:out )?to(?: \w+)?",
    r"what (?:do|does|would|will|did) (?:you|u|yall|they|it|the shop)(?: \w+){0,2} (?:get|want|ask|take|bill|"
    r"hit me|ding me)"
    r" for(?: \w+){0,3}",
    r"what (?:am i|are we|would i be|will i be|id be|ill be) (?:(?!coming|going|bringing|taking)\w+ )?(?:in for|out|"
    r"on the hook for|spending|"
    r"shelling out)",
    r"what(?: \w+){0,3} (?:ballpark|out the door|sticker|tab|going rate|bottom line)(?: \w+){0,3}",
    r"(?:break|breaks|breaking) the bank",
    r"(?:arm and a leg|hurt my wallet|lighter will my wallet)",
    r"(?:cuanto|que tanto) (?:me )?(?:va|van|iria|irian) a (?:salir|cobrar|quitar|sacar|tumbar)(?: \w+){0,3}",
    r"(?:de a|como de a) cuanto",
    r"en cuanto (?:me )?(?:sale|saldria|lo dejan|queda|quedaria|anda)",
    r"cuanto (?:cobrarian|saldria|costaria|seria|pagaria)(?: \w+){0,3}",
    r"(?:what|whats)(?: is)? (?:it|this|that|they) run",
    r"what (?:the |an? |\w+ )?(?:\w+ ){0,2}(?:goes|go|going) for",
    r"(?:on|is it on) the house",
    r"what do you get for (?:a |the )?(?:set|\w+)",
    r"precio(?:s)? (?:por favor|porfa|del?|para|por)(?: \w+)?",
    r"(?:me )?(?:da|dan|pasa|pasan|dar) (?:un )?(?:estimado|presupuesto|aproximado)",
    r"cobran (?:la|el|por|los|las) \w+",
    r"(?:quote|price|cost|estimate|total) please",
    r"what (?:are|r|do|would|will) (?:you|yall) (?:guys )?(?:charging|charge|asking)(?: \w+)?",
    r"en cuanto (?:me )?(?:lo|la|los|las)? ?(?:deja|dejan|sale|queda|da|dan)(?: \w+)?",
    r"(?:dan|hacen|tienen) (?:\w+ )?(?:descuentos?|rebaja|promocion\w*)",
    r"(?:mas o menos )?(?:en|a) cuanto (?:anda|andan|esta|estan|queda|quedaria|me queda|sale|viene)(?: "
    r"\w+){0,3}",
    r"cuanto (?:de|por) (?:mano de obra|labor|todo)",
    r"(?:expect|have) to pay",
    r"set of (?:4|four|tires)(?: \w+){0,3} (?:cost|run|price|gonna)",
    r"total (?:with|after|out the door|price)(?: \w+)?\??",
    r"estimate(?: please)?\Z",
    r"price (?:match|list)",
    r"labor rate",
    r"(?:what|how much) (?:would|will|do|does|am|is) (?:i|it|that|we|this|they) (?:\w+ )?(?:owe|run|be|"
    r"cost|total|pay|charge)(?: \w+){0,3}",
    r"(?:idea|ballpark|estimate|guess) (?:of|on|for) (?:the |a )?(?:cost|price|total|much)",
    r"(?:do|does|will|would) (?:you|yall|it|that) (?:\w+ )?(?:charge|price)(?: \w+){0,3}",
    r"cuant[oa] (?:\w+ ){0,3}(?:cobr|cuest|sal|pag|vale|cost)\w*",
    r"a (?:como|cuanto)(?: (?:el|la|los|las|sale|esta|dan|me|seria|es)\b)?(?! estamos)",
    r"(?:me )?(?:puede|pueden|podria|da|dan) (?:\w+ )?(?:dar |un |el |los )*precios?",
    r"cobran? (?:por|algo|mucho)(?: \w+)?",
    r"que tan car[oa]s?",
    r"(?:si |y |pero |bueno )+cuanto\Z",
    r"cuanto (?:por|el|la|los|las|de) (?:todo|todos|cambio|servicio|llantas?|frenos?|las|los|el|la|\d|"
    r"mano)(?: \w+)?",
    r"how (?:much|mch|mutch)(?! (?:of (?:my|the|a|our) (?:day|morning|afternoon|time|week|saturday|evening|life)|"
    r"longer|time|wear|life|tread|pad|of (?:a|an|the) (?:hurry|"
    r"problem|rush)|is left|left|warning|air|oil|notice))",
    r"(?:what|whats|any|an?|the|that|your|ur|total|ballpark|rough|for a|get|give me a|send me a|"
    r"have a|free|written|need a) (?:\w+ ){0,3}(?:cost|price|pricing|prices|estimate|quote|damage|"
    r"charge|fee|rate|total)s?(?= |\Z|\?|[.,!])",
    r"what (?:will|would|does|do|is|did|are|its) (?:\w+ ){0,4}(?:cost|run|charge|price|"
    r"set me back|pay|going to cost|the bill|damage|looking at)",
    r"what (?:am i|are we) looking at",
    r"(?:cost|price|quote|estimate|ballpark|pricing)\?",
    r"^(?:cost|price|quote|estimate|pricing|cuanto|precio|costo)\Z",
    r"(?:is|are) (?:it|they|this|that|the \w+) (?:\w+ )?(?:free|expensive|covered|under warranty|"
    r"cheap|extra)",
    r"free\?",
    r"(?:any|have|got|a|offer|do) (?:\w+ )?(?:coupons?|discounts?|specials?|deals?|"
    r"senior discount|promos?)",
    r"how (?:expensive|pricey|bad is the (?:bill|damage))",
    r"(?:will|does|would) (?:it|that|this) (?:\w+ )?(?:cost|be expensive|be free|cost me)",
    r"do i (?:have to|need to) pay",
    r"\$+ ?\?",
    r"(?:price|cost)s? (?:for|of|on|to) (?:the |my |it|that|this|a |an |new |all )?\w*",
    r"price range",
    r"charge (?:me )?for (?:the|a|that|it|this)",
    r"(?:send|text|give) (?:me )?(?:a |an |the |your )?(?:price|quote|estimate|cost)s?",
    r"cuant[oa]s? (?:me |nos |les )?(?:va a |vaya a |voy a |seria |es |son |vale\w*|cuest\w*|"
    r"cobr\w*|sale\w*|saldr\w*|costar\w*|costo|tengo que pagar|pag\w+|hay que pagar|seria|"
    r"ser[ai]a?|dinero|por|piden|valdria|serian|sale)(?! tiempo)",
    r"(?:a )?(?:como|cuanto) (?:sale|cuesta|cobran|esta|estan|dan|es|seria|va a (?:ser|salir|"
    r"costar))(?! (?:el tiempo|estas))",
    r"^(?:y )?(?:a )?cuanto\Z",
    r"cuanto\?",
    r"(?:que|el|cual|los|su|sus|un) (?:\w+ ){0,3}(?:precio|precios|costo|costos|presupuesto|"
    r"cotizacion|tarifa)",
    r"(?:precio|costo|presupuesto|cotizacion)\?",
    r"cotiz(?:ar|acion|arme|an|en)",
    r"presupuesto",
    r"(?:es|sale|esta|son) (?:\w+ )?(?:gratis|car[oa]|costoso|economico|barato)\?",
    r"gratis\?",
    r"(?:algun|hay|tienen|tiene) (?:\w+ )?(?:descuento|oferta|promocion|cupon|especial)\w*",
    r"(?:tengo|hay) que pagar",
    r"a como (?:\w+ )?(?:y|el|la|los|las|sale|esta|dan|me|cada|es)\b",
    r"a (?:como|que precio)\Z",
    r"que (?:me )?cobran",
    r"(?:un|el) estimado",
    r"por cuanto(?=\Z|[.,?!]| me| sale)",
    r"(?:costo|precio) y (?:tiempo|tardanza|duracion)",
    r"cuanto (?:dinero|efectivo|cash|llevo|traigo)(?! (?:esperando|aqui|sin|con|de (?:cliente|espera)))",
    r"que cuesta",
    r"(?:cobra|cobran|cuesta) (?:algo|mucho)\??",
)
_STATES = phrases(
    r"(?:esta|es|sale|anda) (?:\w+ )?(?:alto|elevado) (?:el|ese|su) precio",
    r"que precio tan \w+",
    r"(?:muy|bien|tan|re|super) (?:car[oa]s?|alt[oa]s?) (?:sus|los|esos|el|ese|su) precios?",
    r"(?:con|de|a|veo|por) (?:sus|esos|tus|los) precios",
    r"(?:plomero|electricista|albanil|doctor|dentista|abogado) (?:\w+ )?cobra\w*(?: \w+)?",
    r"(?:gets?|gives?|cuts?|got|gave|hooks?) (?:me|us) (?:up with )?(?:a |an |the |some )?(?:\w+ )?(?:deal|break|"
    r"discount|"
    r"price)s?",
    r"me (?:hacen?|dan?|dejan?) (?:\w+ )?(?:precio|descuento|rebaja)",
    r"me (?:salen?|cobran?|quedan?|dejan?|hacen?) (?:\w+ )?(?:mas )?(?:barat[oa]s?|economico)",
    r"(?:than|what|over|above|the price|like) (?:i|we|you|they|you guys) (?:was|were|got|had)?(?: \w+)? ?(?:quoted|"
    r"promised|"
    r"estimated)(?: \w+)?",
    r"what (?:is|s) the (?:big |whole )?deal(?: (?:with|about))?",
    r"(?:got|have|its|it is|is) (?:yourself )?a deal(?=\Z|[.,!])",
    r"(?:the |your |that |ur )?(?:price|cost|quote|estimate|pricing|rate)s? (?:is|was|looks|"
    r"sounds|seems|are|works|seemed) (?:\w+ )?(?:good|fine|ok|great|fair|high|too|crazy|"
    r"ridiculous|reasonable|steep|outrageous|expensive|wrong|insane)",
    r"(?:at any|no matter the|whatever the|regardless of) (?:price|cost)",
    r"at (?:that|this|those|these) (?:price|cost)s?",
    r"(?:thanks|thank you) for (?:the |your )?(?:quote|estimate|price)",
    r"(?:el|ese|su) (?:precio|costo) (?:esta|es|me parece) (?:\w+ )?(?:bien|bueno|car[oa]|alto|"
    r"justo)",
    r"(?:too|so|very|thats|is|pretty|bit|really) expensive(?!\?)",
    r"how much (?:time|longer)",
    r"cuanto tiempo",
    r"(?:got|have|found) (?:a|another) (?:\w+ )?(?:quote|price|estimate|deal) (?:from|at|"
    r"elsewhere|somewhere)",
    r"(?:full|half) price",
    r"es muy caro",
    r"esta muy caro",
    r"for (?:the|that|this) (?:price|cost)",
    r"the price (?:went|goes)",
)


_FREE_DAY = phrases(r"(?:this|that|it|the)(?: (?:one|day|time|slot))? free")
"""Whether the day is free, not the work."""


def holds(said: Said) -> bool:
    """Whether the price is asked for."""
    plain = _STATES.sub(" ", said.text)
    if said.has_times:
        plain = _FREE_DAY.sub(" ", plain)
    return bool(_ASKS.search(plain))
