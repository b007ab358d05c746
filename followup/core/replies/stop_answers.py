"""The answer to our question whether to stop the texts: a yes in any words, or a no."""

from __future__ import annotations

from followup.core.replies.on_first_use import OnFirstUse
from followup.core.replies.said import Said

_YES = OnFirstUse(
    r"(?:yes|yeah|yep|y|sure|ok|si|claro|correct|absolutely|definitely|of course|do it|go ahead|"
    r"(?:that (?:is|would be)|thatd be|that will be) (?:right|correct|lovely|great|nice|good|perfect|fine|"
    r"appreciated|wonderful|ideal)|obviously|"
    r"naturally|you bet|bet|indeed|exactly|100|por supuesto|simon|afirmativ\w*|correct[oa]|desde luego|"
    r"efectivamente|obvio|"
    r"do|id (?:like|love|appreciate) that|would appreciate|thumbsup|yes all of them|all of them|everything|"
    r"todos?|por supuesto|asi es|"
    r"dale|sale|adelante|por favor|exactly|confirm(?:ed)?|affirmative|please do|si todos?|"
    r"correcto)\b"
)
_NO = OnFirstUse(
    r"^\W*(?:(?:oh|um|well|actually|hey|oiga|ay|pues|please|por favor) )*(?:no|nah|nope|not|never mind|nel|"
    r"nombre)\b(?! (?:more|mas|longer|quiero(?! que (?:par|dej|quit|cancel))|i want|doubt|me mand\w+|"
    r"manden|pares|objection|problem|hay problema))|"
    r"\b(?:keep|dont (?:stop|remove|take)|do not (?:stop|remove)|no (?:los |lo |la |me )?(?:paren?|quiten?|"
    r"borren?|saquen?|cancelen?)|not all|only|solo|nomas|just (?:the|those|that|about)|"
    r"(?<!no )sigan?|mantengan?|continu\w+|leave (?:it|them) on|i (?:like|want|need) (?:them|the|these|those|"
    r"your)|me (?:sirven|gustan)|dejenlos|dejalos)\b"
)
"""A no to the question whether to stop, or a wish to keep some of the texts."""
_ENOUGH = OnFirstUse(
    r"\b(?:no (?:more|mas)|(?:ya )?no (?:quiero|deseo)(?! que (?:par|dej|quit|cancel))|(?:si|yes),? ya no|dont "
    r"want|do not want|stop|unsubscribe|"
    r"remove|"
    r"(?:that is|thats) (?:the idea|what i|the plan)|what i (?:said|siad|asked|want|meant|told you)|already "
    r"(?:said|told)|(?:eso|es lo que) (?:quiero|dije|pedi)|all of (?:it|them)|"
    r"everything|forever|para siempre|quitenme|borrenme|saquenme|de baja|(?:cut|take|get|opt) (?:me )?off|(?:im|"
    r"am|we are) (?:through|done)|todos?|cuanto antes|"
    r"please|por favor|porfa|pls)\b"
)
_ASSENT = OnFirstUse(
    r"(?:ye+|yea|yah|yas|ya|uh ?huh|mm?hm+|aja|aha|exacto|exact\w*|eso|simon|sip|sisi|efectiv\w*|10 4|roger|true|"
    r"cierto|desde luego|claro\w*|bye)\b"
)


_END_IT = OnFirstUse(
    r"\b(?:end|kill|cut|finish|stop|drop|axe|ditch|scrap|halt|cancel|nix|quit|lose|shut|pull|turn|switch|wrap) (?:it|"
    r"them|em|this|"
    r"these|those|that|me|us|everything|all|the (?:cord|plug|lot|thing|texts?|messages?|whole thing))\b(?: (?:off|out|"
    r"down|all))?|"
    r"(?:que|favor de|ya|mejor) (?:ya )?(?:paren?|dejen?|corten?|cesen|terminen?|acaben|quiten?|borren?|saquen?|"
    r"cancelen?)\b|"
    r"\b(?:cort|termin|acab|par|quit|cancel|suspend|borr)(?:en|enle|ele|elos|enlos|enlo|enme|eme|ame|alos)\b"
)
"""Words that end something: they answer the question with yes."""
_NO_MORE = OnFirstUse(
    r"^\W*(?:(?:yes|si|please|ya)\W+)?(?:no (?:me (?:mand|escrib|molest|envi)\w+|quiero|deseo|necesito|mas|vuelvan?)|"
    r"ni (?:por|un|una|de|"
    r"siquiera)|nunca|jamas|nada de|i (?:really )?(?:dont|do not) (?:want|need) (?:any|them|these|it|more)|(?:dont|do "
    r"not) (?:ever )?(?:send|"
    r"text|message|contact)|not (?:one|another|a single))\b(?!.*\b(?:que (?:par|dej|quit|cancel)\w+|you to|to (?:stop|"
    r"lose|miss)|but|pero))"
)
"""Refusals of what would still come: also a yes."""
_ALL = OnFirstUse(
    r"^\W*(?:yes |si |please )?(?:each|every|the (?:whole )?lot|all|any and all|lot of them|every ?thing|the whole "
    r"(?:thing|bunch|shebang)|"
    r"cada uno|tod[oa]s?|tod(?:it)+[oa]s?|completamente|completely|entirely|permanently|forever|for good|para siempre|"
    r"de (?:una|plano)|"
    r"definitiv\w+|totalmente|ningun[oa]|none|ni un[oa]|nada)\b"
)
_POLITE = OnFirstUse(
    r"^\W*(?:if you (?:would|could|dont mind|please)|would you|could you|can you|will you|(?:i )?(?:would|d)? ?(?:be "
    r")?(?:grateful|"
    r"appreciate it|much obliged|thankful|gladly|happily|with pleasure|by all means|no doubt|without (?:a )?doubt|no "
    r"question|"
    r"no objections?|why not|fine by me|works for me|sounds (?:good|right|great|perfect|about right)|(?:its |it is "
    r")?about time(?: you asked)?|you heard(?: me)?|long overdue|finally|"
    r"at last|hallelujah|amen|for sure|fo sho|hell yes|heck yes|hell yeah|darn right|damn right|damn straight|you got "
    r"it|right|rite|"
    r"that is (?:it|what i)|i (?:do|did|am|(?:would |d )?(?:like|love|want|appreciate|prefer) (?:that|it)|guess so|"
    r"think so|believe so|suppose so|wish|insist)|go for it|make it so|"
    r"(?:so )?ordered|aye|aye aye|oui|da|si senor\w*|con gusto|ya era hora|por fin|al fin|cuanto antes|lo antes "
    r"posible|hagale|hazlo|"
    r"haganlo|andale|andele|orale|va|va que va|arre|de acuerdo|eso es|eso mero|ey|ei|sin duda|le agradeceria|se lo "
    r"agradezco|si fuera tan "
    r"amable|si es tan amable|hagame el favor|hagan el favor|mejor si|(?:que|pues|ya dije que|si) si(?: hombre| "
    r"mujer| le digo| les digo| ya| senor)*|si hombre(?: si)?|i said yes|yes already|(?:i )?already said yes|ps si|"
    r"como no|ya les dije|ya dije|ya se "
    r"los dije|"
    r"correctisimo|positivo|asi mero|asi mismo|claro|obvio|faltaba mas|ni hablar|ni modo))(?: (?:please|por favor|"
    r"thanks|thank you|"
    r"gracias|sir|maam|then|entonces|que si|yes|si|it is|now|ya))*\W*$"
)
"""A polite or hearty yes that is the whole answer."""
_STAYS = OnFirstUse(
    r"\b(?:negativ\w+|carry on|as (?:they|it|you) (?:are|is|were)|stay\w*|keep|leave (?:it|me|them|things) (?:on|as|"
    r"alone|be|in)|"
    r"take (?:it|that) back|miss (?:you|them)|wrong (?:button|word)|mistake|accident|oops|didnt mean|did not mean|"
    r"misunder\w+|"
    r"heavens no|(?:un )?(?:error|malentendido)|sin querer|no quise|dej(?:e|en|a|em)(?:lo|los|las|la)|como esta|para "
    r"nada|"
    r"todavia no|me (?:sirven|gustan|ayudan|interesan)|siga(?:n|nme)?|less often|fewer|menos seguido)\b"
)


_PLAIN_NO = OnFirstUse(
    r"\b(?:of course not|certainly not|absolutely not|god no|hell no|(?:please|oh|pls|no) dont\W*$|claro que no|por "
    r"supuesto que no|"
    r"como cree\w*|nombre|ni se les ocurra|never said|why would i)\b"
)
_SOME = OnFirstUse(r"\b(?:but|except|pero|menos|good|bien|set|fine)\b")


def declines(said: Said) -> bool:
    """Whether it says no to our question whether to stop."""
    if _NO_MORE.pattern.match(said.text):
        return False
    return bool(
        _NO.pattern.search(said.text)
        or _PLAIN_NO.pattern.search(said.text)
        or (_STAYS.pattern.search(said.text) and not _YES.pattern.match(said.text))
    )


def agrees(said: Said) -> bool:
    """Whether it says yes to our question whether to stop."""
    if _NO_MORE.pattern.match(said.text):
        return True
    if declines(said):
        return False
    if _END_IT.pattern.search(said.text) or _POLITE.pattern.match(said.text):
        return True
    if _ALL.pattern.match(said.text) and not _SOME.pattern.search(said.text):
        return True
    if said.text in ("please", "por favor") or _ENOUGH.pattern.search(said.text):
        return True
    return any(_YES.pattern.match(one) or _ASSENT.pattern.match(one) for one in (*said.clauses, *said.parts))
