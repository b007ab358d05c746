"""`gone`: the customer no longer has the car."""

from __future__ import annotations

from followup.core.replies.said import Said, phrases

CODE = "gone"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "sold it", "traded it in last month", "dont have that car anymore", "it got totaled in june",
        "we got rid of the van", "gave it to my nephew", "that cars in the junkyard", "my ex has it now",
        "ex wife got it in the divorce", "we sold that one last yr", "bank repoed it", "its at the scrap yard",
        "donated it to charity", "somebody stole it", "i dont own that anymore", "no longer have the vehicle",
        "turned the lease in", "passed it on to my grandson", "its not mine anymore",
        "wrecked it and insurance took it", "that truck is long gone", "got a different car now",
        "my brother bought it from me", "scrapped it for parts", "gave that one to my daughter",
        "i drive a new one now, old one is gone", "she sold the car", "the car burned up last year", "car is gone",
        "i dont have it no more", "junked it", "sold her last spring", "it was repossessed", "we donated the car",
        "the van got stolen", "wrote it off after the accident", "i gave it back to the dealer",
        "my daughter owns it now", "got rid of that lemon", "car was totaled in the flood", "no longer own it",
        "we sold it", "car's been sold", "i dont have the truck anymore", "traded last week", "its gone",
        "got totaled", "gave the car away", "my ex took the car", "car was repoed", "no longer have the van",
    ),
    "es": (
        "ya lo vendi", "ya no tengo ese carro", "me lo robaron", "lo cambie por otro", "fue perdida total",
        "se lo regale a mi sobrino", "ya vendi la troca", "ese carro ya no es mio", "lo mande al yonke",
        "se lo quedo mi ex", "lo entregue al banco", "mi hija se lo llevo a texas", "lo choque y ya no sirvio",
        "ya no existe ese carro", "se lo vendi a un amigo", "lo di de enganche para otro", "ya no manejo ese",
        "compre otro carro ya", "ese ya lo tiene mi hermano", "la camioneta la vendimos",
        "se quemo, ya no la tengo", "lo devolvi, era lease", "lo done a la iglesia", "ya tengo otro",
        "el seguro se lo llevo por perdida", "lo traspase", "ya se fue ese carro lo vendi", "lo vendi hace un ano",
        "ya no es mi carro", "el carro fue robado", "lo mandaron a la chatarra", "lo entregamos a la agencia",
        "se lo dimos a mi suegro", "quedo en perdida total", "ya no la tengo la camioneta", "me lo quito el banco",
        "la cambie por una nueva", "lo vendimos", "ya no tengo la van", "ya no es mio ese carro",
        "se lo vendi a mi vecino", "lo choque perdida total", "lo regale", "ya lo cambie por otro carro",
    ),
}  # fmt: skip

_CAR = r"(?:it|them|her|him|that|this|the|my|our|mine|both)"
_SAYS = phrases(
    r"(?:hauled|towed|carted|dragged|carried|took|taken|sent|went|gone|going|shipped|sold) (?:it |her |him |that |"
    r"the \w+ |"
    r"off |away |out )*(?:to|for|as) (?:the )?(?:scrap|salvage|parts)(?=\Z|[.,!]| (?:last|in|years?|months?|"
    r"yesterday|already))",
    r"(?:adjuster|insurance|junk man|scrapper|salvage (?:guy|company)|wrecker|tow yard|junkyard) (?:\w+ )?(?:hauled|"
    r"towed|took|"
    r"carted|picked) (?:it|her|him|that|the \w+)(?: (?:away|off|up))?",
    r"(?:flood|creek|river|water|storm|surge)\w* (?:\w+ ){0,4}(?:drowned|swallowed|ruined|totaled|washed away|took|"
    r"got) (?:it|"
    r"her|him|the (?:car|truck|van))",
    r"(?:some(?:one|body) else|some other \w+|another (?:guy|person|family|man|woman))s? (?:\w+ )?(?:driveway|"
    r"garage|hands|problem|headache)",
    r"(?:to|in|at) (?:the|a) (?:\w+ )?(?:junk ?yard|scrap ?yard|scrap ?heap|graveyard)",
    r"(?:car|truck|van|she|it)s? (?:is )?history(?=\Z|[.,!])",
    r"(?:flood|fire|tornado|hurricane|bank|repo man) took (?:it|her|the \w+|my \w+)",
    r"(?:it|she) (?:is |was )?got? sto?len",
    r"cube of metal",
    r"wrapped (?:it|her|the \w+) (?:a)?round a (?:pole|tree|post)",
    r"wrote it off",
    r"(?:caught fire|burned up|burnt up|burned|went up in flames|blew up|got flooded|flooded|drowned) (?:\w+ "
    r"){0,2}(?:last (?:month|year|"
    r"summer|winter|fall|spring)|(?:years?|months?) ago|in (?:20\d\d|january|february|march|april|may|june|july|"
    r"august|september|"
    r"october|november|december))",
    r"(?:havent|hasnt|have not|aint|hadnt) (?:even )?(?:had|owned|drove|driven) (?:it|that|the|this|my|her) ?(?:\w+ "
    r")?(?:since|in (?:a |over |"
    r"\d|years|months|ages|forever)|for (?:a |over |\d|years|months|ages)|anymore)(?: \w+){0,3}",
    r"(?:i|we) (?:\w+ )?(?:sale|selled|selt) (?:it|them|her|him|that|this|my|our|the)(?: \w+){0,2}",
    r"^sold(?=[ ,.!]|\Z)(?! me| out| on)",
    r"(?:it was|was|got) written off",
    r"passed (?:it|that|the|this|my) (?:\w+ )?(?:along|on|down)(?: to)?",
    r"traded (?:up|down|it|in)",
    r"totall?ed",
    r"(?:is|s|in|at|to|went to|sitting in|took it to) (?:the|a) (?:junk ?yard|scrap ?yard|salvage yard|"
    r"wrecking yard|dump|boneyard)",
    r"(?:ex|ex wife|ex husband|wife|husband|divorce|ex girlfriend|ex boyfriend) (?:\w+ )?(?:got|has|took|"
    r"kept|owns) (?:it|the car|that car|the truck|that one)",
    r"(?:gave|given|giving) (?:that one|that|this one|it|mine|the \w+) (?:to|away)",
    r"somebody stole",
    r"stole(?:n)? (?:it|my|the)",
    r"turned (?:\w+ ){0,3}lease (?:\w+ )?in",
    r"(?:bought|buy) (?:it|the car|that car|the truck|mine) (?:from|off|off of) (?:me|us)",
    r"(?:wrecked|crashed) (?:it|my car|the car|that car)(?: \w+){0,3} (?:insurance|totaled|gone|total)",
    r"(?:car|truck|van|it|one) (?:is |was |has )?(?:long gone|burned up|burnt up|went to (?:my|the)|been "
    r"gone|bye bye)",
    r"(?:dont|do not|doesnt) (?:own|have|drive) (?:it|that|this|those)(?: \w+)?(?: any ?more| any longer)",
    r"old one is gone",
    r"(?:ex|ex wife|ex husband|exwife|bank|repo (?:man|guy)|thief|thieves) (?:\w+ )?(?:took|got|kept|snatched) "
    r"(?:the|my|our|that|it)(?: \w+)?",
    r"(?:bank|finance company|dealer) took (?:it|the car|her) back",
    r"(?:scrapped|junked|crushed)",
    rf"(?:already |just |have |had |we |i |recently )?sold {_CAR}(?! (?:me|us))",
    r"(?:i|we|ive|just|already) (?:\w+ )?sold(?! (?:me|us|out|on))",
    r"sold(?! ?!)\Z",
    r"(?:car|truck|van|vehicle|suv|it|that one|one) (?:is |was |has been |got |"
    r"been )+(?:\w+ )?(?:sold|stolen|totaled|totalled|repossessed|repoed|junked|scrapped|donated|"
    r"traded|gone|wrecked|crushed)(?! with)",
    r"trad(?:ed|ing) (?:it|that|the|my|her|him|them|in|this|our)(?! (?:next|soon))",
    r"traded",
    r"totall?ed",
    r"got rid of",
    r"(?:dont|do not|doesnt|no longer) (?:even )?(?:have|own|drive|got|possess) (?:it|that|this|"
    r"the|my|her) ?(?:\w+ ){0,3}(?:anymore|any ?more|any longer|no more|now|these days)",
    r"(?:dont|do not) (?:have|own) (?:it|that car|that truck|that vehicle|that van|that one|"
    r"the car|her)\Z",
    r"no longer (?:\w+ )?(?:have|own|drive|mine|my car|in my possession|got|the owner)",
    r"(?:isnt|not|aint|is not|no longer) (?:my|mine|our) (?:car )?(?:anymore|any more|now)",
    r"(?:donated|junked|scrapped) (?:it|the|my|that|her)?",
    r"gave (?:it|her|the car|my car|that car|the truck|the van|him) (?:to|away|back)",
    r"turned (?:it|her|the car|my car|the lease|my lease|in) (?:back )?in",
    r"lease (?:is |was |has )?(?:up|ended|over|expired|done)(?! (?:in|next|on))",
    r"returned (?:it|the car|my car|that car)(?: \w+){0,3}(?: lease)?",
    r"(?:my|the) (?:car|truck|van) (?:is|was) gone",
    r"(?:bought|got|have|drive|driving) (?:myself )?(?:a|an) (?:brand )?(?:new|different|another|"
    r"newer|other) (?:one|car|truck|vehicle|suv|van|ride)(?! (?:battery|seat|part))",
    r"(?:it|car) (?:died|was destroyed|burned) .*(?:scrap|junk)\w*",
    r"(?:someone|they|got) stole(?:n)?(?: it| my car| the car)?",
    r"repo(?:ed|ssessed)",
    r"my (?:ex|son|daughter|brother|sister|nephew|niece|kid|mom|dad) (?:has|owns|drives|"
    r"took) (?:it|the car|that car) now",
    r"passed (?:it|the car) (?:on|down) to",
)
_DICE = phrases(
    r"(?:banco|ex|seguro) se (?:llevo|quedo)(?: con)? (?:el|la|mi|lo) \w+",
    r"se (?:lo|la) (?:quedo|llevo|quedaron) (?:mi|el|la|con|a)?(?: \w+){0,3}",
    r"(?:mi|el|la) \w+ se (?:lo|la) (?:llevo|quedo)",
    r"(?:lo|la) choqu?e y (?:ya )?no (?:sirvio|quedo|jala|sirve|la|lo)\w*",
    r"ya no existe",
    r"(?:lo|la) (?:perdi|perdimos) en (?:la|el|un|una)(?: \w+)?",
    r"(?:lo|la) (?:estrell|desbarat|destroz|volc)\w+",
    r"(?:lo|la) (?:chocaron|choque|choco) y (?:\w+ )*(?:perdida|inservible|total|loss|basura|chatarra)",
    r"declar\w+ (?:como )?perdida",
    r"ya no hay (?:carro|coche|auto|troca|camioneta)",
    r"(?:fue|lo|la) (?:donad[oa]|donaron|done|donamos|remataron|remate)",
    r"se quedo con (?:el|la|mi) (?:carro|coche|auto|troca|camioneta)",
    r"(?:con|tiene|es de) otro dueno",
    r"(?:paso )?a mejor vida",
    r"(?:comprador|deshuese)",
    r"(?:ya )?tengo otro(?: carro| coche)?\Z",
    r"(?:seguro|aseguranza) (?:\w+ ){0,3}(?:perdida|llevo|total|pago)",
    r"(?:lo|la) traspas(?:e|amos|o)",
    r"se (?:quemo|incendio)(?: \w+)?,? (?:y )?ya no (?:lo|la) tengo",
    r"ya se fue ese",
    r"(?:ese|esa) ya (?:lo|la) tiene",
    r"vendi(?:mos|do|da)?(?! (?:a mi casa))",
    r"(?:lo|la|se) vendio",
    r"ya no (?:lo|la|los) (?:tengo|tenemos|manejo|uso)",
    r"ya no (?:tengo|tenemos|es mi[oa]?|manejo|soy (?:el|la) duen[oa])(?: (?:ese|esa|el|la|mi|"
    r"este|esta|carro|coche|auto|camioneta|troca|vehiculo)\b)+",
    r"ya no es mi[oa]",
    r"(?:me |nos |se )?(?:lo |la )?robaron(?: (?:el|mi|la) \w+)?",
    r"fue robad[oa]",
    r"(?:lo|la) cambi(?:e|amos|o) por",
    r"cambie (?:de|mi) (?:carro|coche|auto|troca|camioneta)",
    r"(?:perdida|destruccion) total",
    r"(?:se )?(?:lo|la) regal(?:e|amos|o)",
    r"regal(?:e|amos) (?:el|mi|la|ese)",
    r"(?:lo|la) (?:di|dimos|done|entregue|entregamos|devolvi|chatarre)(?: (?:a|en|de|como|para|"
    r"al)\b)?",
    r"(?:devolvi|entregue) (?:el|mi|la|ese) (?:carro|coche|auto|camioneta|lease)",
    r"compr(?:e|amos) (?:otro|un carro nuevo|uno nuevo|otra|un nuevo carro|carro nuevo)",
    r"me deshice",
    r"(?:yonke|deshuesadero|chatarra|corralon)",
    r"(?:lo|la) tiene (?:mi|otro|ahora)\b.*",
    r"se lo (?:di|pase|vendi|llevo el banco)",
    r"(?:me )?(?:lo|la) quito el banco",
    r"tengo otro (?:carro|coche|auto)(?: ahora)?",
)
_NOT_YET = phrases(
    r"(?:might|may|will|going to|gonna|want to|plan(?:ning)? (?:to|on)|thinking (?:of|about)|"
    r"about to|trying to|looking to|if i|before i|until i|when i|could|"
    r"should) (?:\w+ ){0,2}(?:sell|selling|trade|trading|get rid|getting rid|donate|junk|scrap)\w*",
    r"(?:selling|trading) (?:it|her|the|my|them)\b",
    r"(?:voy a|vamos a|quiero|pienso|estoy por|planeo) (?:\w+ )?(?:vender|cambiar|regalar)\w*",
    r"(?:you|yall) (?:guys )?sold",
    r"(?:havent|didnt|never|not) (?:\w+ )?(?:sold|traded|got rid)",
    r"no (?:lo|la) (?:he )?vendi\w*",
    r"me vendieron",
    r"(?:got|have|bought|with) (?:a|an) (?:new|different|another|other) (?:car )?(?:battery|tire|"
    r"tires|job|phone|baby)",
    r"have another car(?: too| as well)?",
    r"(?:no|ni|sin) (?:\w+ )?(?:tengo|tenemos|tener) otro(?: \w+)?",
)


def holds(said: Said) -> bool:
    """Whether the car is gone, not merely for sale."""
    plain = _NOT_YET.sub(" ", said.text)
    if said.offers and plain.strip(" .!") == "sold":
        return False  # as at an auction: taken
    return bool(_SAYS.search(plain) or _DICE.search(plain))
