"""`decline`: the customer says no without giving a date to come back to."""

from __future__ import annotations

import re

from followup.core.replies.limits import is_about_one_subject, is_for_good
from followup.core.replies.said import Said, phrases

CODE = "decline"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "no",
        "no thanks",
        "not interested",
        "im good",
        "nah ill pass",
        "dont need it",
        "too expensive for me",
    ),
    "es": (
        "no",
        "no gracias",
        "no me interesa",
        "asi estoy bien",
        "no hace falta",
        "esta muy caro, paso",
    ),
}

_NO_START = re.compile(
    r"^(?:(?:hi|hello|hey|ok|oh|hola|um|well|pues|yeah|uh|hmm|thanks|thank you|gracias|sorry|"
    r"buenas?|tardes|dias|lol|haha|ah|aah|naw|ay|mmm|sir|actually|good (?:morning|afternoon|"
    r"evening)) )*(?:no+|nope|nah|n|negative|thumbsdown|no way|no sir|no maam|nones|nel|nop|"
    r"hell no)(?= |\Z)(?! (?:worries|worry|problem|prob|probs|idea|rush|later than|earlier|"
    r"preference|one|more|doubt|clue|wonder|se|hay problema|pasa nada|tengo preferencia|"
    r"te preocupes|importa|issues?|need to wait|matter|wait|wrong|particular|es (?:problema|"
    r"molestia)|body|brakes?|power|start|heat|ac|noise|para|arranca|prende|frena|funciona|conozco|"
    r"soy|(?:los|las|te|le|les|lo|la) conozco|es mi|es el|se quien|tengo (?:carro|coche|auto)|"
    r"hay nadie))"
)
_SAYS = phrases(
    r"no,? (?:thanks|thank you|thx|ty|gracias)",
    r"(?:not|no longer|isnt|never) (?:\w+ )?interested",
    r"not for me",
    r"im (?:all )?(?:good|ok|fine|set|cool|covered)(?: (?:thanks|thank you|for now|right now|here|"
    r"without it|as is|as it is))?(?! (?:for|with|to|on|then|at|either|any|that|sooner|whenever|"
    r"after|before|until|monday|tuesday|wednesday|thursday|friday|saturday|tomorrow|today))",
    r"we are (?:all )?(?:good|set|fine)(?! (?:for|with|to|on))",
    r"all set",
    r"(?:ill|i will|im going to|gonna|going to|have to|i|hard|think ill) pass(?: on (?:it|this|"
    r"that))?",
    r"hard pass",
    r"^pass\Z",
    r"(?:dont|do not|doesnt|dont think i|no longer|no|wont|didnt) (?:\w+ )?(?:need|want|"
    r"care for)(?! (?:to (?:wait|move|change|be|know)|a (?:ride|loaner|car|lift)|"
    r"(?:any )?(?:more )?(?:texts?|messages?)|you|it until|it before|it by|a loaner|help|one|"
    r"my car))",
    r"no need(?: for (?:it|that|this|a visit))?(?! (?:to wait|for a (?:ride|loaner)))",
    r"(?:not|isnt) (?:necessary|needed|worth)",
    r"too (?:expensive|pricey|much(?: money)?|high|rich)",
    r"cant afford (?:it|that|this)?",
    r"(?:id|i would) rather not",
    r"(?:i )?(?:dont|do not) think so",
    r"(?:not|never) (?:going to|gonna) (?:do|happen|come|bother|fix|pay)",
    r"no (?:way|chance|deal)",
    r"^skip(?: it)?\Z",
    r"decline",
    r"(?:leave|skip) it",
    r"no longer need\w*",
    r"none (?:of (?:those|them|these|that|the above))?(?: \w+)?",
    r"neither(?: (?:one|of (?:those|them)|works?))?",
    r"(?:those|these|them|they|any of (?:those|these|them)|all of (?:those|these|them)|"
    r"either of those|both) (?:times |days |dates )?(?:dont|wont|do not|cant|will not|arent|"
    r"are no|are not|are bad|are all|isnt)",
    r"(?:cant|wont|not able to|dont) (?:\w+ )?(?:do|make) (?:any|either|those|these|them|that)",
    r"(?:that|it|this|time|day) (?:\w+ )?(?:doesnt|dont|wont|isnt going to|does not|will not) work",
    r"too (?:early|late|soon|far)(?! (?:to tell|for that price))",
    r"not (?:gonna|going to) (?:work|happen)",
    r"doesnt work",
    r"wont work",
    r"(?:doing|do|fix|take care of|change|replace) (?:it|them|that) (?:myself|ourselves)",
    r"(?:go|going|taking it|take it) (?:elsewhere|somewhere else|to (?:another|a different|my|"
    r"someone))",
    r"found (?:a|an|another|someone) (?:\w+ )?(?:cheaper|else|shop|place)",
    r"(?:cheaper|less) (?:elsewhere|somewhere else|at another|down the)",
    r"leave it as is",
    r"thumbsdown",
    r"maybe not",
    r"not today thanks",
    r"^not really\Z",
    r"(?:id|i would) prefer not",
    r"forget (?:it|about it)",
    r"^never ?mind\Z",
    r"^nvm\Z",
    r"changed my mind",
)
_DICE = phrases(
    r"no(?: muchas)? gracias",
    r"(?:ya )?no (?:me |nos )?(?:interesa|interesan|hace falta|es necesario|conviene|gusta|"
    r"apetece|urge)",
    r"(?:asi|ya) (?:estoy|estamos) bien",
    r"estoy bien(?: asi| gracias)?",
    r"^paso\Z",
    r"(?:yo|mejor|esta vez|por esta vez|lo dejo y|gracias pero) paso",
    r"(?:ya )?no (?:lo |la |los )?(?:quiero|necesito|ocupo|deseo|queremos|necesitamos|"
    r"requiero)(?! (?:ir antes|esperar|que me lleven|mas mensajes|mensajes|recibir|que me|grua|"
    r"carro|transporte|un))",
    r"(?:muy|demasiado|bien|esta|que) car[oa]s?",
    r"no (?:me )?alcanza",
    r"no hace falta",
    r"mejor no",
    r"de ninguna manera",
    r"para nada",
    r"ni (?:loco|modo|hablar)",
    r"ningun[oa](?: (?:de|me|dia|hora)(?: \w+)*)?",
    r"ni (?:un[oa]|el|la) (?:ni|ni el|ni la)?(?: \w+)?",
    r"no (?:me |nos )?(?:sirve|sirven|queda|quedan|funciona|funcionan|acomoda|acomodan|"
    r"conviene)(?: \w+)?",
    r"no (?:puedo|podemos) (?:\w+ )?(?:esos?|esas?|ese dia|esa hora|ningun\w+|en (?:esos|esas)|"
    r"a esas|a esa)",
    r"(?:muy|demasiado) (?:temprano|tarde|pronto|lejos)",
    r"no creo",
    r"lo (?:hago|arreglo|cambio) yo",
    r"no (?:cuenten|cuente) conmigo",
    r"dejelo asi",
    r"dejalo asi",
    r"olvid\w+lo",
    r"(?:voy a|lo voy a|prefiero) (?:ir a|llevar\w* (?:a|con|al)) otro",
    r"no va(?:mos|n)? a (?:ir|hacer)\w*",
    r"no quiero nada",
    r"no por favor",
)
_NO_DECLINE = phrases(
    r"cant complain",
    r"(?:dont|do not|i) (?:mind|care)",
    r"if (?:you|i|we) dont need",
    r"(?:isnt|not) too (?:bad|expensive|much)",
    r"(?:do|dont) (?:i|we) (?:really )?need(?: to)?",
    r"(?:not|too) (?:\w+ )?late (?:for|to)",
    r"why (?:do|did|dont)",
    r"(?:is|was|isnt) (?:it|that) too (?:late|early|soon)",
    r"how (?:much|long)",
    r"dont want (?:it|them|this) to",
    r"no se preocupe\w*",
    r"dont need (?:a |the )?(?:ride|loaner|lift|car)(?: home| back)?",
    r"no need to (?:wait|rush|call)",
    r"dont want to (?:wait|be late|bother|miss|drive|lose)",
    r"im (?:ok|good|fine|cool) (?:for|with|to|on|either|any)",
    r"(?:es|sera) muy tarde para",
    r"no necesito (?:que me lleven|transporte|carro)",
)


def holds(said: Said) -> bool:
    """Whether a no to what was asked stands in it."""
    plain = _NO_DECLINE.sub(" ", said.text)
    if any(_NO_START.match(one) for one in said.parts):
        return True
    if is_about_one_subject(plain) or is_for_good(plain):
        return True
    return bool(_SAYS.search(plain) or _DICE.search(plain))


def starts_with_no(said: Said) -> bool:
    """Whether a part of the text begins with a plain no."""
    return any(_NO_START.match(one) for one in said.parts)
