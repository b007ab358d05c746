"""Yes words: at the head of a part of a text, or in it (`he said do it, so yes`); and the `si` that is an if."""

from __future__ import annotations

import re

from followup.core.replies.said import Said

MOCKS = re.compile(r"\b(?:when pigs|hell freezes|in your dreams|fat chance|dream on|as if)\b")
"""What turns any yes beside it into a no."""

_YES_WORD = re.compile(
    r"^(?:(?:hi|hello|hey|oh|hola|um|well|so|pues|buenas|buenos|dias|tardes|noches|good|morning|there|omg|wow|gosh|"
    r"dude|"
    r"man|bro|ay|uy|sir|maam|dear|amigo|senor|senora|senorita|joven|jefe|jefa|oiga|mire|bendito|"
    r"afternoon|evening|thanks|thank you|gracias|ah|haha|lol|yay) )*"
    r"(?:yes+|yeah|yep|yup|y|sure|absolutely|definitely|of course|certainly|ok|alright|all right|"
    r"sounds (?:\w+ )?(?:good|great|perfect|fine|awesome|fair|reasonable)|perfect|great|awesome|cool|fine|deal|"
    r"why not|works for me|that works|lets do it|go ahead|please do|for sure|bet|you bet|thumbsup|"
    r"im (?:in|interested)|no problem|aye|sure thing|(?:id|i would) (?:be (?:glad|happy)|love) to|you got it|"
    r"youre on|gladly|"
    r"count (?:me|on me)|go for it|yessir|yes sir|yes maam|my pleasure|sold|book it|sign me up|put me down(?! for)"
    r"|si+|sip|claro|por supuesto|simon|orale|andale|dale|sale|va|vale|de acuerdo|esta bien(?! car)|"
    r"me parece|perfecto|bueno|adelante|con gusto|excelente|seguro|listo|me interesa|por que no|"
    r"porque no|correcto|asi es|confirm(?:o|ad[oa]|ed)?|chevere|de una(?! vez)|con mucho gusto|ya estas|hecho|"
    r"cuenten conmigo|jalo|me late|sipi|afirmativo|obvio|con todo gusto|claro que si|ta (?:bien|bueno)|esta bueno|"
    r"(?:esta )?cheque(?=\Z| ahi| alla)|vaya pues|arre|fierro|sobres|hagale|dele|como no|okey|oki)"
    r"(?![a-z\d])(?! (?:no|not|enough|morning|afternoon|que no|days?|idea|si no|thing on)\b)"
)
_FALTERS = re.compile(r"bueno\b")
"""In the middle of a text it corrects or takes breath (`a las 10, bueno, a las 11`); at its head it is a yes."""
IF = re.compile(
    r"(?:y |o |pero |entonces |es que )?si (?:(?:dios|acaso|tienen?|hay|hubiera|pueden?|pudier\w+|podrian?|fuera|es "
    r"posible|ustedes|"
    r"usted|gust\w+|no(?! (?:hay problema|problem|importa|pasa|se preocup\w+))|"
    r"cierran|abren|me l[oa]s? (?:agarran?|reciben?|toman?|revisan?|aceptan?)|trabajan|salgo|llueve|nieva|hace "
    r"(?:frio|calor|sol)|sigo(?! (?:en pie|firme|igual))|sigue(?! (?:en pie|firme|"
    r"igual))|compro|cambio|alcanzo|termino|acabo|"
    r"consigo|trabajo|"
    r"descanso|pago|traigo|espero|manejo|se (?:puede|pudiera|podria|descompone|poncha|tarda)|me (?:pueden?|dan|da|"
    r"avisan|dicen|"
    r"llaman|prestan|presta|pagan|sale|toca|dejan|alcanza|hacen|cobran|ponen|espero)|le|les)\b"
    r"|(?:lo|la) (?:dejo|llevo|traigo)\b.*\b(?:cuando|cuanto|a que hora)\b)"
    r"|y si (?:lo|la|me|nos|no|se|mejor|voy|paso)\b"
)
"""Where the accent is gone, a `si` before these is an if and no yes."""


def has_yes_word(said: Said) -> bool:
    """Whether a part of the text begins with a yes word, which counts beside a time that is named."""
    parts = said.parts[:1] + tuple(one for one in said.parts[1:] if not _FALTERS.match(one))
    is_said = any(_YES_WORD.match(one) and not IF.match(one) for one in parts) or says_yes_within(said.text)
    return is_said and not MOCKS.search(said.text)


_WITHIN = re.compile(
    r"(?<!say )(?<!said )(?<!saying )\b(?:yes|yeah|yep) (?:i|we) (?:would|want|do(?! not)|need|should)\b(?! (?:know|"
    r"to know|like to (?:know|speak|"
    r"talk|cancel|complain|stop)|not)\b)"
    r"|\bsi (?:l[oae]s? )?(?:quiero|queremos|ocupo|necesito) (?:que (?:me )?(?:l[oa]s? )?)?(?:arregl|cambi|revis|"
    r"repar|chec|cheq|hac|hag)\w+"
    r"|\b(?:so|and|but|then|says|said|thats?|that is|thats a|is a|guess) (?:oh |um |well |a |that )?(?:yes|"
    r"yeah|yep|"
    r"absolutely|definitely)\b(?! (?:or|if|and no|but no|it does)\b)"
    r"|\b(?:he|she|husband|wife|boss|mom|dad|they) (?:says?|said) (?:to )?(?:just )?(?:do it|get it done|go (?:for "
    r"it|ahead)|"
    r"go get it done|yes)\b"
    r"|\b(?:dice[ns]?|dijo|dijeron|digo|dije|entonces|asi) que si\b(?! (?:no|se|hay|tienen|pueden?|podian?|cuanto|me "
    r"pueden)\b)"
)
"""`I talked to my husband and he said get it done, so yes`"""


def says_yes_within(plain: str) -> bool:
    """Whether a yes stands in the middle of a text, as what is concluded or what somebody at home has said."""
    found = _WITHIN.search(plain)
    return bool(found) and not _DENIED_YES.search(plain)


_DENIED_YES = re.compile(r"\b(?:not|dont|didnt|never|cant|wont|wouldnt|if (?:he|she|they)|until|unless|no thanks)\b")
