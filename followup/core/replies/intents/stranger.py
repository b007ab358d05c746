"""`stranger`: it is not the person we think, or one who does not know us. A question who this is is `help`."""

from __future__ import annotations

import re

from followup.core.replies.said import Said, phrases

CODE = "stranger"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "wrong number", "you have the wrong person", "this isnt Dave", "i dont know who you are",
        "i dont own a car", "never been to ur shop", "new number, not him", "nobody here by that name",
        "sorry wrong #", "u got the wrong guy", "who? i dont know any shop", "theres no Linda at this number",
        "this is not her phone anymore", "he doesnt have this number anymore", "i just got this phone number",
        "i think this was meant for someone else", "not the person ur looking for",
        "i live in another state, never used you", "i dont have a vehicle", "wrong contact bud",
        "this is his mom, he changed numbers", "you must be mistaken, not my car",
        "i've never brought a car to you", "dont know what car ur talking about",
        "this number belongs to someone else now", "im not a customer of yours", "we never did business with you",
        "not me", "im not who you think i am", "there is no Sarah here", "this number isnt hers anymore",
        "i dont have a car there", "you've reached a different person", "nope wrong dude",
        "i live in canada and dont know you", "I'm not the owner of that car", "never heard of this shop",
        "u have the wrong phone", "this phone belongs to my kid", "no idea who you are", "i dont know any bob",
        "sorry wrong person", "you're texting the wrong number", "no one named that", "im not the owner",
        "i think you got the wrong guy", "this is a landlord's phone, wrong number", "this isnt his number",
        "not my vehicle", "we dont know you",
    ),
    "es": (
        "numero equivocado", "se equivocaron de persona", "yo no soy Maria", "no los conozco",
        "aqui no vive nadie con ese nombre", "no tengo carro", "yo ni manejo", "este numero ya no es de el",
        "no soy la persona que buscan", "me confunden con otra", "nunca he ido a su taller",
        "no se de que taller hablan", "esta equivocado amigo", "ese no es mi carro", "soy otra persona",
        "no conozco a ese senor", "este cel es nuevo", "no soy cliente suyo", "yo no tengo troca",
        "aqui no hay ningun Pedro", "marcaron mal el numero", "no es el numero de ella",
        "el ya no usa este telefono", "creo que se equivocaron", "ese mensaje no es para mi", "yo ni carro tengo",
        "no se quienes son", "no es aqui", "esta equivocado de numero", "yo no conozco ese taller",
        "no soy esa persona", "no, esta marcando mal", "yo no he llevado carro con ustedes", "no se quien es usted",
        "aqui no es", "ese senor ya no tiene este numero", "nunca los he contratado", "se equivoco de numero",
        "no soy el dueno", "no la conozco", "no es de aqui", "no tengo ese carro ni los conozco",
    ),
}  # fmt: skip

_SAYS = phrases(
    r"(?:(?:that|it|this|he|she)(?:s| is| was)? )?(?<!and )(?<!if )(?:not|isnt|wasnt|aint|isnt even) me(?=\Z|[.,!?]| "
    r"(?:sorry|you|lol|"
    r"so|at all|bud|dude)\b)",
    r"got this (?:number|phone)(?: \w+){0,4} (?:new phone|(?:days?|weeks?|months?|years?) ago|recently|last "
    r"\w+|yesterday)",
    r"(?:whoever|who ?ever) (?:you|u) (?:want|are looking for|need|re after)(?: \w+)?",
    r"you (?:want|need) the other \w+",
    r"(?:dont|do not) know any \w+\Z",
    r"^not me\Z",
    r"reached (?:a|the) (?:different|wrong|other)(?: \w+)?",
    r"(?:no|zero) idea who (?:you|u|this)(?: \w+)?",
    r"my name is(?: not|nt) \w+",
    r"(?:you )?(?:meant|trying|supposed|think you meant) to (?:text|reach|contact|message) (?:someone|"
    r"somebody|another|a different)(?: \w+)?",
    r"new number(?:,| and|\.)? (?:\w+ )?not (?:him|her|them|\w+)\Z",
    r"(?:he|she|they) (?:doesnt|dont|does not|do not|no longer|never) (?:have|has|use|uses|own|owns|"
    r"answer|answers) (?:this|that|the) (?:number|phone|cell)",
    r"not the (?:\w+ )?(?:person|one|guy|lady|man|woman|owner) (?:\w+ )?(?:you|u|that|who|looking)",
    r"(?:he|she|they) (?:has |have )?(?:changed|switched) (?:his |her |their |the )?(?:numbers?|phones?)",
    r"(?:this is|im|i am) (?:his|her|their|\w+s) (?:mom|mother|dad|father|wife|husband|son|daughter|"
    r"sister|brother|roommate|boss|ex)(?=\Z|[ ,.])(?! .*\b(?:can|bring|drop|come|works?)\b)",
    r"(?:never|havent|didnt|dont) (?:ever )?(?:do|did|done|does) (?:any )?business (?:with|there)",
    r"(?:never|havent|didnt) (?:ever )?(?:brought|bring|taken|took|had|have) (?:a|my|any|our) (?:car|"
    r"truck|vehicle|van) (?:to|at|in|by)",
    r"dont know (?:any|of any|about any|your|that|the) (?:shop|garage|mechanic|place|business)",
    r"(?:wrong|another) (?:\w+ )?(?:bud|buddy|bro|man|pal|dude)\Z",
    r"(?:i )?(?:dont|do not|doesnt) (?:even )?(?:have|own|drive) (?:a |any |no )?(?:car|vehicle|truck)s?\Z",
    r"(?:no car|dont drive|take the bus)(?: here)?\Z",
    r"(?:belongs|belong) to (?:someone|somebody|another)",
    r"meant for (?:someone|somebody|another|my|him|her)",
    r"(?:wrong|incorrect) (?:number|person|guy|phone|contact|lady|dude|customer|client|one buddy|"
    r"woman|man)",
    r"wrong #",
    r"(?:have|got|texted|texting|messaged|reached) (?:the )?wrong (?!date|day|time|size|part|"
    r"price)\w+",
    r"(?:this|that|it) (?:is not|isnt|aint|is no longer|was never) (?:\w+ ){0,2}(?:number|phone|"
    r"cell)(?: anymore)?",
    r"not (?:his|her|hers|their|my husbands|my wifes) (?:number|phone)",
    r"(?:this|it) (?:is not|isnt) (?:him|her|he|she|them|who you think|the person|me\Z|"
    r"that person)",
    r"(?:im|i am|am) not (?:the (?:person|one|owner|guy|lady|right person|car owner|customer)|"
    r"a (?:customer|client)|your (?:customer|client)|him\b|her\b|who you|that person|mr\b|mrs\b|"
    r"ms\b|in your system)",
    r"not (?:a|your) customer",
    r"(?:no one|nobody|no body|noone|there is no|no such person|theres no|"
    r"no) (?:\w+ ){0,2}(?:here )?(?:by (?:that|this|the) name|with that name|named \w+|called (?!me|"
    r"us|back|or|to|yet|him|her)\w+|"
    r"of that name)",
    r"no (?!complaints?|problems?|issues?|noise\w*|worries|trouble|thanks|leaks?|changes?)\w+ (?:lives )?here\Z",
    r"no(?:body)? \w+ at this number",
    r"(?:dont|do not|never|didnt|doesnt) (?:even )?(?:know|knew) (?:you(?! (?:did|do|were|are|"
    r"have|had|guys (?:did|do|were|are|had|open)))|who you|who this|who that|yall|anyone (?:named|"
    r"called|by|with)|any(?:body)? (?:named|called)|a \w+\Z|her\b|him\b|this (?:shop|person|place|"
    r"number|business|company)|your (?:shop|business|company|place|garage)|what (?:car|vehicle|"
    r"shop|this is|youre talking|you are talking))",
    r"(?:never|havent ever|have not) (?:\w+ )?(?:been (?:there|to (?:your|this|that))|"
    r"heard of (?:you|this|your|yall)|used (?:you|your|this)|(?:taken|brought|had) (?:my|a|"
    r"any) (?:car|vehicle|truck) (?:there|to you|in)|visited|gone to (?:your|this)|done business)",
    r"(?:dont|do not|doesnt|never) (?:even |actually )?(?:own|have|drive|had|owned|driven) (?:a|"
    r"any|no) (?:car|vehicle|automobile|truck|van|suv|license|motor vehicle)(?! (?:seat|wash|loan|"
    r"that day|then|to get|for|payment|until))",
    r"i dont (?:even )?drive\Z",
    r"i dont (?:even )?(?:own|have|drive) (?:a|an|that|this|the) (?!(?:\w+ )?any ?more|way|ride|time|minute|day|"
    r"problem|preference|choice|appointment|clue|reason|car|date|lot|question|moment|chance|"
    r"specific|particular|second|code|job|good|great|loaner|warranty|receipt|thing|number|plan|"
    r"set|anymore|any|bill|copy|schedule|coupon|quote|spare|garage|shop|mechanic|driver|babysitter|"
    r"sitter)\w+(?: \w+)?\Z",
    r"(?:just|recently) got (?:this|a new) (?:number|phone number|phone)",
    r"(?:this is )?(?:my|a) new (?:phone )?number(?! is)",
    r"(?:someone|somebody) elses? (?:number|phone|car)?",
    r"someone else(?! (?:did|do|to|can|is|will|could|bring|drop|has|already|fixed|took|replaced|changed|who))",
    r"mistaken (?:identity|me)",
    r"(?:not|isnt|is not) my (?:car|vehicle|truck|van|suv)(?! (?:anymore|any more|that|now))",
    r"(?:you|u) (?:have|got|must have|are|texted) (?:\w+ )?mistaken",
    r"i think (?:you|u) (?:have|got|mean|meant|are looking for) (?:the wrong|someone|another|"
    r"the other|somebody)",
)
_DICE = phrases(
    r"^no es de aqui",
    r"no tengo ese (?:carro|coche) ni",
    r"^no es aqui",
    r"(?:esta |estas )?marcando mal",
    r"(?:yo )?no he (?:ido|llevado|estado|usado|tenido)(?: \w+){0,5}",
    r"nunca (?:los|las|les)? ?(?:he|hemos) (?:\w+)",
    r"soy nuev[oa] (?:con|en|de) (?:este|el) (?:numero|telefono|cel\w*)",
    r"de persona\Z",
    r"(?:yo )?ni (?:siquiera )?(?:carro|coche|auto|troca|manejo|se manejar)(?: tengo| manejo)?",
    r"(?:yo )?no manejo\Z",
    r"no se (?:ni )?de (?:que|cual) (?:taller|carro|coche|lugar|negocio|me)",
    r"(?:este|ese) (?:cel\w*|telefono|numero|num) (?:es |esta )?(?:nuevo|mio ahora|ya cambio)",
    r"marc(?:o|aron|aste|ado) (?:\w+ )?(?:mal|equivocad\w*)(?: el numero)?",
    r"no es (?:el |su |ese )?(?:numero|telefono|cel\w*)(?: de (?:el|ella|\w+))?",
    r"(?:el|ella) ya no (?:usa|tiene|contesta) (?:este|ese|el) (?:telefono|numero|cel\w*)",
    r"(?:mensaje|texto) no es para (?:mi|nosotros)",
    r"(?:este|ese) (?:numero|telefono|cel\w*) (?:ya )?no es de \w+",
    r"(?:numero|persona|telefono|cliente|celular|contacto|num) (?:es |esta )?(?:equivocad[oa]|"
    r"incorrect[oa]|erroneo)",
    r"se (?:ha |han |esta |estan )?equivoc(?:o|aron|ado|ando|a)(?! (?:de|en) (?:fecha|dia|hora|"
    r"precio|la (?:fecha|hora|cuenta)))",
    r"te equivocaste",
    r"estas? equivocad[oa]s?",
    r"equivocad[oa]\Z",
    r"(?:otra|equivocada) persona",
    r"no soy (?!mecanic|expert|de (?:los|las) que|tan|muy|un experto|buen|capaz|rico|millonari)\w+",
    r"no (?:los|las|te|le|lo|la|les) conozco",
    r"no conozco (?:a |su |este |ese |ningun|nadie|esa|ese)\w*",
    r"no se (?:ni )?quien(?:es)? (?:es|son|eres|sea|seran|habla|me)",
    r"aqui no (?:vive|hay|es|esta|conocemos|se encuentra|tenemos)",
    r"no (?:hay|vive|existe|conozco|tengo) (?:a )?(?:nadie|ningun[oa]?|"
    r"ninguna) (?:\w+ )?(?:con ese|de ese|llamad[oa]|aqui|que se llame|persona|maria|juan|jose|"
    r"pedro)",
    r"nunca (?:he|hemos) (?:ido|estado|llevado|usado|escuchado|oido|tenido|visitado)",
    r"no (?:tengo|manejo|poseo|tenemos) (?:ningun |un |ni )?(?:carro|coche|auto|vehiculo|"
    r"automovil|troca)(?! (?:hoy|ese|ahorita|manana|para|el|disponible|en))",
    r"(?:este|ese) (?:numero |telefono )?(?:ya )?no es (?:el |su |mi )?(?:numero|telefono|de)",
    r"(?<!ya )no es (?:mi|su) (?:carro|coche|auto)(?! ya)",
    r"(?:ya )?no es (?:mi|su) (?:numero|telefono)(?! ya)",
    r"no soy (?:yo|cliente|el|la|esa|ese)",
    r"(?:este )?(?:es )?(?:un |mi )?numero nuevo",
    r"me confund\w+ con",
    r"no (?:es|era) para mi",
    r"(?<!ya )no es mi (?:carro|coche|auto|camioneta)",
)
_NAME = re.compile(
    r"\b(?:[Ii]'?m not|I am not|[Tt]his is ?n[o']?t|[Tt]his isn.?t|[Nn]ot|[Ii]t'?s not) (?:Mr|Mrs|Ms|[A-Z][a-z]{2,})\b"
)
_NO_NAME = re.compile(
    r"(?:Mon|Tues|Wednes|Thurs|Fri|Satur|Sun)day|(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun|Tues|Thur|"
    r"Thurs)\b|January|February|March|April|May|June|July|August|September|October|November|"
    r"December|Interested|Now|Today|Tomorrow|This|Until|Sure|Right|Really|Christmas|Thanksgiving|"
    r"Yet|For|Before|After|Good|Available|Working|The|Going|Happy|Bad|At|In|On|Next|Spam|"
    r"Happening|Needed|Necessary|Any|Free"
)
_LOWER_NAME = re.compile(
    r"\b(?:this (?:is not|isnt)|im not) (?:mr |mrs |ms |senor |senora )?(?:maria|juan|jose|john|"
    r"mike|dave|bob|mary|david|carlos|luis|pedro|ana|linda|james|robert|susan|karen|lisa|michael|"
    r"chris|sarah|jennifer|tom|steve|jim|bill|joe|mark|anna|rosa|miguel|pablo|laura|sandra|kevin|"
    r"brian|dan|daniel|paul|jessica|amy)\b"
)


def holds(said: Said) -> bool:
    """Whether it states that we have the wrong person, or that they do not know us."""
    if _SAYS.search(said.text) or _DICE.search(said.text) or _LOWER_NAME.search(said.text):
        return True
    found = _NAME.search(said.received)
    return bool(found) and not _NO_NAME.search(found.group() if found else "") and not said.received.isupper()
