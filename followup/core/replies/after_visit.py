"""What a reply to `was everything all right` says of the visit that is over."""

from __future__ import annotations

import re

from followup.core.replies.decision import Decision
from followup.core.replies.intents import decline
from followup.core.replies.said import phrases
from followup.core.replies.situation import Situation

_YES = re.compile(r"(?:yes|yeah|yep|si|sure|claro)\b")
_ALL_GOOD = phrases(
    r"(?:all|its|everything|runs|running|drives|driving|works|working|was|is|were|went|looks|"
    r"feels|really|so far|car is) (?:\w+ )?(?:good|great|fine|well|perfect|perfectly|awesome|"
    r"smooth|smoothly|excellent|set|ok)",
    r"flawless|spotless|impeccable|top notch|first rate|without a hitch",
    r"10 ?/ ?10",
    r"good",
    r"great",
    r"perfect",
    r"no (?:problems?|issues?|complaints?)",
    r"cant complain",
    r"todo (?:bien|perfecto|excelente|muy bien)",
    r"(?<!no )muy bien",
    r"excelente",
    r"sin (?:problemas?|quejas)",
    r"happy with",
    r"very happy",
    r"satisfied",
    r"(?<!no quede )content[oa]",
    r"love it",
    r"all set",
    r"not (?:too |so |half )?bad",
    r"couldnt (?:be|have been) (?:better|happier)",
    r"(?:todo )?al (?:cien|100)",
    r"like new",
    r"no me (?:puedo quejar|quejo)",
    r"ninguna queja",
    r"de (?:lujo|maravilla|primera|diez|10)",
    r"10 de 10|nitido|chulada|impecable|chevere|de pelos|a todo dar|al tiro",
    r"(?:content|buen|excelent|satisfech|rapid)isim[oa]s?",
    r"(?<!no quede )(?<!nada )(?:muy |bien |super )satisfech[oa]",
    r"mejor de lo que (?:\w+)",
    r"(?:mis |todos mis )?respetos",
    r"todo (?:\w+ )?(?:chido|suave|padre|super|en orden|ok|de maravilla)",
    r"sin (?:queja|problema) alguna?",
    r"(?:se siente|quedo|anda|esta) como (?:\w+ )?nuev[oa]",
    r"no tengo quejas?",
    r"(?<!no )(?<!nada )(?<!muy )bien",
    r"no (?:me |le |nos )*(?:ha |han )?(?:dado|dio) (?:ninguna? |nada de )?(?:lata|guerra|problemas?|batalla)",
    r"no (?:me |se |le )*(?:ha |han )?(?:vuelto|volvio|volvieron) a (?!(?:quedar|servir|funcionar|jalar|arreglar))\w+",
    r"ni un (?:ruido|problema|pero)",
)


_NOT_WELL = phrases(
    r"no quedo (?:bien|como)",
    r"^(?:no |nope )?not really",
    r"^(?:pues |no |bueno )*la verdad(?: que)? no",
    r"^no la verdad",
    r"(?:not|isnt|wasnt) (?:fixed|right|any better)",
    r"quedo (?:mal|igual|peor)",
)


def settle_after_visit(now: Situation, made: Decision) -> None:
    """What the words say of a visit that is over: a yes, a complaint, a fault that is still there."""
    if made.has("complaint", "symptom"):
        if "symptom" in made.codes and (decline.starts_with_no(now.said) or _NOT_WELL.search(now.text)):
            made.codes.add("complaint")
        is_yes_but = _YES.match(now.text) and "symptom" not in made.codes
        made.drop(("decline", "done") if is_yes_but else ("decline", "accept", "done"))
    elif _ALL_GOOD.search(now.text):
        made.become("accept", ("decline", "done"))
    elif "decline" in made.codes:
        made.become("complaint", ("decline",))
