"""`complaint`: the customer is unhappy with the shop, the bill, or being texted. Grumbling at a price is none."""

from __future__ import annotations

import re

from followup.core.replies.limits import minds_number_or_hour
from followup.core.replies.said import Said, phrases

CODE = "complaint"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "you guys overcharged me last time", "worst service ever", "why do u keep texting me",
        "oh great, another bill", "you scratched my door", "way too many texts", "still not fixed after 2 visits",
        "your mechanic was rude", "i waited 3 hrs last time", "nobody ever called me back",
        "not happy with the work", "you left grease all over my seat", "last time took all day",
        "im really upset with u guys", "i paid and its still broken", "yall lost my hubcap",
        "every time i come in its something new", "what a rip off", "this is getting annoying",
        "you broke my hood latch", "i didnt ask for that work", "my bill was wrong", "very disappointed",
        "you people never answer the phone", "i want my money back", "sick of being upsold",
        "wow another thing to pay for, shocker", "u left a bolt loose", "terrible experience last visit",
        "your service is terrible", "i was charged twice", "you damaged my car", "the repair didnt last a week",
        "i'm still waiting on my refund", "you never called me back", "the guy at the counter was rude",
        "ridiculous prices and bad service", "you put the wrong oil in my car",
        "why are you always trying to sell me stuff", "another text?? really",
        "i had to come back 3 times for the same problem", "you people are crooks", "this is unacceptable",
        "you guys messed it up worse", "great more money out of my pocket", "not impressed", "you ruined my rim",
        "i got charged for stuff i never asked for", "took my car in twice and same issue",
        "your people have no manners", "that was the worst waiting room ever",
        "how come my bill is higher than the quote", "my bumper has a scratch since i left it with you",
        "not ok with how i was treated", "i was lied to", "never got my car back on time", "you kept my car a week",
        "what a nightmare last time", "you owe me a refund", "i don't trust you guys",
        "not going through that again", "yall take forever", "i feel ripped off", "the price kept changing",
    ),
    "es": (
        "me cobraron de mas", "pesimo servicio", "estoy muy molesto con ustedes", "me rayaron el carro",
        "demasiados mensajes", "me dejaron sucio el carro", "no me arreglaron nada", "quede muy inconforme",
        "nunca me llamaron", "me trataron mal", "la otra vez espere 3 horas", "puro sacar dinero con ustedes",
        "quiero mi dinero de regreso", "otro gasto mas, que bonito", "me salio peor que antes",
        "el mecanico fue grosero", "me perdieron una copa de la llanta", "cada vez que voy me sacan algo nuevo",
        "no quede contento con el trabajo", "que abusivos", "por que me escriben tanto",
        "nadie contesta el telefono", "me mintieron", "tardaron todo el dia", "me quebraron la manija",
        "que mal trabajo hicieron", "quiero poner una queja", "muy mal servicio", "me cobraron dos veces",
        "me danaron el carro", "todavia espero mi reembolso", "que groseros", "siempre es lo mismo con ustedes",
        "me hicieron mal el trabajo", "puros problemas desde que fui con ustedes", "no me gusto el servicio",
        "son unos rateros", "otro mensaje? ya cansan", "quede muy molesta la ultima vez",
        "me dijeron una cosa y me cobraron otra", "no confio en ustedes", "salio con un rayon",
        "tuve que regresar dos veces", "me vendieron piezas malas", "que desorden de taller",
        "nunca me avisaron nada", "el trabajo no duro nada", "la atencion es mala", "me quieren ver la cara",
        "es un robo lo que cobran", "me lo devolvieron peor",
    ),
}  # fmt: skip

_SAYS = phrases(
    r"(?:fine|good|great|ok|happy|well) (?:til+|until) (?:i|we) (?:\w+ ){0,4}(?:saw|noticed|found|spotted|see|"
    r"seen)(?: \w+){0,3}",
    r"(?:what kind of|some) (?:business|shop|place|operation) is this",
    r"(?:was|got|been) (?:charged|billed) (?:twice|double|for (?:work|something|things?))",
    r"(?:stripped|cracked|dented|scuffed|snapped|broke) my (?:\w+ )?(?:plug|rim|wheel|bolt|bumper|door|window|"
    r"mirror|fender|seat)s?",
    r"who (?:taught|trained|raised) your(?: \w+){0,4}",
    r"not coming back after(?: \w+)?",
    r"(?:no ?one|nobody) (?:is )?(?:here|at the (?:desk|counter))",
    r"(?:nobody|no one|noone) (?:\w+ )?(?:picked up|answered|called|called back|apologized|showed up|looked "
    r"at)(?: \w+)?",
    r"(?:you|yall|you guys|you people) (?:\w+ )?(?:over ?charged|over ?billed|double charged|double billed)(?: \w+)?",
    r"(?:charged|billed) (?:me )?(?:twice|double)",
    r"(?:issue|problem|trouble) with (?:my|the|your) (?:bill|invoice|charge|receipt)",
    r"(?:not|un) ?happy\. i want",
    r"no manners",
    r"(?:not ok|not okay|unhappy|upset) with (?:how|the way|what)(?: \w+){0,4}",
    r"(?:was|been|got|were) (?:\w+ )?(?:lied to|misled|treated (?:badly|poorly|like)|mistreated|"
    r"overcharged)",
    r"(?:brakes?|tires?|parts?|work|battery|pads?) (?:you|yall) (?:\w+ )?(?:put|did|sold|installed|"
    r"gave)(?: \w+){0,3} (?:junk|bad|wrong|broke|broken|failed|already|crap|garbage|worn)",
    r"(?:dont|do not|cant|never) trust (?:you|yall|your|this)(?: \w+){0,2}",
    r"not (?:going through|doing|dealing with) (?:that|this|you guys) again",
    r"(?:you|yall|they) (?:guys )?(?:always )?take (?:forever|too long|so long)",
    r"(?:price|bill|quote|cost|story) (?:kept|keeps) (?:changing|going up|growing)",
    r"pick up (?:your|the) phone",
    r"(?:dirtier|worse|louder|filthier) (?:\w+ )?than (?:i|when|before|it)(?: \w+){0,3}",
    r"(?:said|told me|claimed|swore) (?:it|that|they|this) (?:was|were|is) (?:\w+ )?(?:and|but) (?:it |"
    r"they )?(?:wasnt|isnt|werent|not)(?: \w+)?",
    r"(?:third|second|fourth|fifth|tenth) (?:text|message|time)(?: \w+){0,2} (?:today|this week|already)",
    r"couldnt (?:be|have been|get) worse",
    r"(?:great|good|fine|lovely|awesome|perfect),? if you (?:like|enjoy|love|dont mind)(?: \w+){0,4}",
    r"(?:repair|fix|work|job|part|brakes?|it) (?:\w+ )?(?:didnt|did not|only) last(?:ed)?(?: \w+){0,3}",
    r"(?:still |im |i am )?waiting (?:on|for) my (?:refund|money)(?: \w+)?",
    r"(?:you|yall|they|u) (?:guys )?(?:\w+ )?put (?:the )?wrong(?: \w+){0,4}",
    r"another (?:text|message|reminder)\b",
    r"(?:come|came|go|went|bring|brought|been) (?:it )?(?:back |in )?(?:\d+|two|three|four|several|"
    r"multiple|so many) times(?: \w+){0,4}",
    r"(?:messed|screwed|fucked|made) (?:it|that|my \w+|the \w+) (?:up )?(?:worse|up)",
    r"(?:bunch of )?crooks",
    r"not impressed",
    r"(?:you|yall|they|u) (?:guys |people )?forgot(?: \w+){0,5}",
    r"(?:did not|didnt|dont|do not) appreciate(?: \w+){0,4}",
    r"(?:felt|feel|feeling|being|get|got) (?:\w+ )?(?:pressured|cheated|scammed|disrespected|ignored|"
    r"misled|taken advantage of|ripped off)",
    r"made of money",
    r"thanks for nothing",
    r"(?:must|probably) think im (?:\w+ )+",
    r"(?:fantastic|great|wonderful|awesome|lovely|perfect|super)[ ,.!]+(?:more|another|yet another) \w+",
    r"(?:you|u|yall|they|your \w+|someone) (?:guys |people |all |folks )?(?:\w+ )?(?:broke|cracked|"
    r"scratched|scuffed|bent|stripped|tore|ripped|spilled|left|lost|dropped|ruined|damaged|chipped|burned|"
    r"busted) (?:my|the|a|our|grease|oil|trash|tools?)",
    r"(?:i|we) (?:\w+ )?(?:waited|sat|sat there|was there|was stuck there|had to wait) (?:\w+ "
    r"){0,3}(?:hours?|hrs|forever|all day|half the day)(?: \w+){0,5}",
    r"last time (?:\w+ ){0,6}(?:all day|forever|hours|hrs|waited|took|horrible|bad|terrible|rude|awful|"
    r"nightmare|mess)",
    r"(?:every|each) ?time (?:i|we) (?:come|go|bring|am|take|show)(?: \w+){0,4} (?:new|something|else|"
    r"more|another|problem|money|\$)",
    r"(?:always|every time) (?:\w+ )?(?:something|another thing)(?: \w+)?",
    r"(?:you|yall|they|nobody|no one|people) (?:guys |people |all )?(?:never|dont|doesnt|wont|didnt|ever) "
    r"(?:even )?(?:answer|answers|answered|pick|picks|picked|return|returns|returned|call|calls|called|"
    r"respond|responds) (?:\w+ ){0,3}(?:phone|calls?|back|up|me)?",
    r"(?:oh |wow |ugh |lol )*(?:wow|oh|great|ugh|geez|jeez|gee|yay|surprise|shocker|of course|figures)(?: "
    r"great| wow)?[ ,.!]+(?:another|more|now|one more|yet another) (?:thing|bill|repair|expense|problem|"
    r"issue|\w+) ?(?:to (?:pay|fix|buy|spend))?",
    r"(?:another|one more|more) (?:thing|stuff|things|crap) to (?:pay|spend|fix)",
    r"sick of(?: being)? (?:upsold|ripped|overcharged|your|this|paying|you)(?: \w+)*",
    r"(?:lost|stole|kept|forgot) my (?:hub ?cap|keys?|lug|wheel|cap|stuff|tools?|registration)\w*",
    r"(?:hate|dislike|dont like|cant stand) (?:that |how |when |it when )?(?:you|yall|these|the|getting|"
    r"being) (?:\w+ )?(?:text|texts|texting|messages|messaging|do|shop|service|texted)",
    r"(?:i|we) (?:hate|regret) (?:\w+ )?(?:your|this|that|going|using)(?: \w+)*",
    r"(?:oh |well |ah )*(?:joy|great|wonderful|lovely|perfect|fantastic|goody|yay|look)[ ,.!]+(?:(?:it is|"
    r"its) )?(?:you(?: "
    r"guys| people)?|yall|them) again(?: \w+){0,5}",
    r"with (?:your|yalls) hands? out|(?:your|yalls) hands? (?:is |are )?(?:always )?(?:out|in my (?:pocket|wallet))",
    r"just what i (?:need|needed|wanted)",
    r"(?:charged|billed) (?:me )?(?:\w+ )?for (?:work|something|things|stuff|parts?)(?: \w+){0,4} "
    r"(?:didnt|never|not)",
    r"(?:text|texting|texts|message|messages) (?:me )?too much",
    r"(?:im|i am|still|really|very|so) (?:\w+ )?(?:upset|pissed|mad|angry|furious|annoyed|ticked|"
    r"frustrated)(?: \w+){0,3}",
    r"(?:left|leaving) (?:a|an|your|the|some) (?:\w+ )?(?:tool|wrench|socket|rag|bolt|cap|mess|grease|"
    r"stain|dent|scratch)\w*(?: \w+){0,4}",
    r"(?:left|was|is|were) (?:\w+ ){0,2}(?:bolt|lug|cap|plug|screw)s? (?:\w+ )?loose",
    r"overcharg\w*",
    r"(?:charged|billed) me (?:\w+ )?(?:twice|double|too much|extra|for (?:something|work|things|"
    r"stuff))",
    r"double (?:charged|billed)",
    r"(?:rip|ripped|ripping) (?:me |us |people )?off",
    r"ripoff",
    r"scam(?:s|med|mers?|ming)?",
    r"(?:worst|terrible|horrible|awful|lousy|bad|poor|crappy|shitty|pathetic) (?:\w+ )?(?:service|"
    r"experience|shop|place|job|work|customer service|attitude|mechanics?|garage|business)",
    r"(?:not|never|un|very|so|really|pretty|super|extremely|im|was|am) (?:\w+ )?(?:disappointed|"
    r"upset|angry|pissed|mad|furious|annoyed|frustrated|unhappy|dissatisfied|irritated|livid|"
    r"disgusted)",
    r"(?:not|wasnt|isnt|werent|arent|aint|never|un) ?(?:\w+ )?(?:happy|satisfied|impressed|"
    r"pleased|thrilled)",
    r"unhappy",
    r"unsatisfied",
    r"dissatisfied",
    r"unacceptable",
    r"ridiculous",
    r"unprofessional",
    r"disappointed",
    r"complain(?:t|ing)?",
    r"(?:you|u|yall|they|your (?:guys?|shop|mechanics?|tech\w*|people)|someone there) (?:guys |"
    r"people |all |folks )?(?:\w+ )?(?:broke|scratched|damaged|ruined|messed up|screwed up|"
    r"screwed|lied|forgot|lost my|never (?:called|fixed|told|finished|replied|answered|got back|"
    r"showed)|didnt (?:fix|even|do|tighten|call|finish|tell|put|replace|listen)|left (?:a|the|my|"
    r"grease|oil)|dented|took forever|wasted|made me wait|kept me waiting|cheated|stole|dinged|"
    r"botched|ripped|hung up|were rude)",
    r"(?:still|its|it is|is|car is|worse) (?:\w+ )?(?:not fixed|broken|worse|the same problem|"
    r"doing it|not right|isnt fixed)(?: (?:since|after))?",
    r"(?:was|were|is|are|so|very) (?:\w+ )?(?:rude|dishonest|incompetent|unfriendly|disrespectful)",
    r"(?:want|need|demand) (?:\w+ )?(?:refund|my money back)",
    r"(?<!tax )refund",
    r"money back",
    r"(?:bad|negative|1 star|one star|terrible) review",
    r"(?:better business|bbb)\b",
    r"waited (?:\w+ ){0,4}(?:hours?|forever|all day|and nobody|and no one)",
    r"waste of (?:time|money)",
    r"(?:never|not) (?:coming|going|come|go) back",
    r"last time (?:\w+ ){0,6}(?:wrong|broke|worse|charged|hours|rude|mess\w*|scratch\w*|damage\w*|"
    r"problem)",
    r"(?:why|how come) (?:do|are|am|did|does|is) (?:you|u|yall|i|this) (?:guys |people |all |"
    r"\w+ )?(?:keep|still|always|constantly|getting|texting|text|messaging|bothering|spamming|"
    r"sending|contacting|harassing)",
    r"(?:keep|keeps|kept|constantly|always|quit) (?:texting|messaging|bothering|spamming|"
    r"harassing|sending|bugging) ?(?:me)?",
    r"harass\w*",
    r"spam(?:ming)?",
    r"(?:annoying|creepy|pushy|intrusive)",
    r"(?:oh|wow|gee|well|ah|my|how) (?:great|wonderful|fantastic|lovely|perfect|awesome|nice|joy|goody|goodie|super|"
    r"terrific|"
    r"splendid|brilliant|fun|swell)[ ,.!]+(?:something|one more thing|one more|yet|some more|a new|here comes|still|"
    r"again|as if|"
    r"like i|more|another|now)(?: \w+){0,6}",
    r"how (?:very )?convenient(?: for (?:you|u|yall)| of you)?(?=\Z|[.,!])",
    r"(?:another|one more|yet another) (?:\w+ )?(?:sales pitch|money grab|cash grab|upsell|shakedown|way to (?:get|"
    r"take) my)(?: \w+){0,3}",
    r"(?:oh )?(?:great|wonderful|fantastic|lovely|perfect|awesome|nice|joy|yay|goody|goodie|"
    r"fun)[ ,.!]+(?:another|more|yet another|just what i (?:need|needed)|now what|what now|"
    r"here we go)(?: (?:bill|money|text|thing|repair|expense|problem|message|reminder|charge|scam|"
    r"upsell|sales))?",
    r"just what i need(?:ed)?",
    r"(?:always|just|only|all you) (?:\w+ )?(?:want|after|care about|wanting|trying to get|"
    r"trying to upsell|upselling|sell) (?:\w+ )?(?:money|my money|upsell|me something|something)",
    r"upsell\w*",
    r"(?:here we go|not this) again",
    r"money ?grab",
    r"(?:already )?told you (?:guys )?(?:\w+ )?(?:no|twice|already|before|last)",
    r"how many times",
    r"what a (?:joke|mess|waste|rip)",
    r"this is (?:bs|bullshit|crap|garbage|nonsense|a joke|stupid)",
    r"(?:bs|bullshit)",
    r"(?:your|the|my) (?:bill|invoice) (?:is|was) (?:\w+ )?(?:wrong|off|incorrect|too|way|higher|"
    r"not what)",
    r"(?:problem|issue|wrong|error|mistake) (?:with|on) (?:my|the) (?:bill|invoice|charge|receipt)",
    r"(?:didnt|dont|do not|never) (?:\w+ )?(?:authorize|approve|agree to|ask for|"
    r"order) (?:\w+ )*(?:work|repair|that|this|it|charge)",
    r"(?:didnt|never|did not) (?:sign up|signed up|give you (?:my|permission)|gave you|agree to|"
    r"ask (?:for|to)) (?:\w+ ){0,5}(?:this|texts?|these|number|get|be|messages?)",
    r"nobody (?:called|answers|picks up|told)",
    r"no one (?:called|ever called|answers|picks up|told)",
    r"no thanks to you",
    r"(?:you|your) (?:guys )?suck",
    r"(?:service|work|job) (?:was|is) (?:\w+ )?(?:bad|terrible|awful|horrible|poor|slow|crap|"
    r"sloppy|a joke)",
    r"(?:took|taking) (?:way )?too long",
    r"(?:too|so|this|that) (?:many|much) (?:texts?|messages?)",
    r"sick (?:of|and tired)",
    r"fed up",
)
_DICE = phrases(
    r"bien hasta que (?:vi|note|me di cuenta|encontre)(?: \w+){0,3}",
    r"(?:escriben?|mandan?|textean?) (?:\w+ ){0,2}(?:muy|bien|tan|re) temprano(?: \w+){0,2}",
    r"no (?:les |le )?(?:confio|tengo confianza)(?: \w+){0,3}",
    r"(?:me |nos )?(?:lo |la )?(?:entregaron|devolvieron|regresaron) (?:\w+ )?(?:tarde|peor|mal|suci[oa]|"
    r"rayad[oa]|golpead[oa])(?: \w+){0,3}",
    r"(?:salio|salia|quedo) (?:\w+ )?(?:rayon|rayad[oa]|golpe|abolladura|manchad[oa]|mal)(?: \w+)?",
    r"me vendieron (?:\w+ )?(?:mal[oa]s?|usad[oa]s?|piezas|chafa)(?: \w+)?",
    r"que (?:desorden|cochinero|desastre|mal|feo)(?: \w+){0,3}",
    r"(?:ver|vieron) la cara",
    r"contesten(?: el telefono)?",
    r"no sirvio (?:la |el |lo )?\w+",
    r"(?:todavia |sigo )?(?:espero|esperando) (?:mi|el) reembolso",
    r"siempre (?:es )?lo mismo(?: \w+){0,3}",
    r"(?:ya )?(?:cansan|hartan|aburren)",
    r"puros (?:problemas|gastos|cuentos)(?: \w+){0,4}",
    r"(?:nomas|solo|nada mas|siempre) (?:quieren|buscan|andan) (?:\w+ )*(?:sacar|cobrar|vender|dinero|"
    r"lana|feria)\w*(?: \w+){0,3}",
    r"(?:dejaron|tuvieron|hicieron) (?:\w+ )?esperando(?: \w+){0,3}",
    r"(?:me )?(?:llegan|mandan|escriben|envian) (?:\w+ )?(?:muchos|demasiados|tantos|un monton de) "
    r"(?:mensajes|textos)",
    r"(?:me |nos )?(?:lo |la )?dejaron (?:\w+ ){0,4}(?:suci[oa]|mal|rayad[oa]|peor|tirad[oa]|con|sin|"
    r"manchad[oa]|golpead[oa]|abiert[oa]|flojo)(?: \w+)?",
    r"(?:la )?(?:otra|ultima|pasada) vez (?:\w+ ){0,3}(?:esper\w+|tard\w+|cobr\w+|me|peor|mal)",
    r"(?:quiero|exijo|pido|devuelvan|regresen)(?:me)? (?:\w+ )?(?:dinero|reembolso)(?: \w+){0,3}",
    r"otro gasto(?: mas)?",
    r"otra (?:cuenta|cosa que pagar|sacada de dinero)",
    r"(?:salio|quedo|esta|qued[oe]) (?:\w+ )?peor(?: que \w+)?",
    r"cada (?:vez|rato) que (?:voy|vamos|lo llevo|llevo)(?: \w+){0,6}",
    r"no quede (?:\w+ )?(?:content|satisf|conform|agusto|a gusto|feliz|bien)\w*(?: \w+){0,3}",
    r"tardaron (?:\w+ )?(?:mucho|todo el dia|demasiado|horas|\d+|como|bastante|un buen)(?: \w+)?",
    r"(?:me |nos )?(?:quebraron|rompieron|perdieron|rasparon|golpearon|ensuciaron|mancharon|rayaron|"
    r"descompusieron|tumbaron|(?<!lo )(?<!la )robaron(?! (?:el|la|mi|mis)? ?(?:carro|coche|auto|troca|camioneta|"
    r"van)))(?: \w+){0,4}",
    r"(?:me )?hicieron (?:esperar|perder|dar vueltas|mal)(?: \w+){0,2}",
    r"no me gusto (?:como|el|la|lo que|nada)(?: \w+){0,4}",
    r"no me (?:\w+ )?(?:arreglaron|repararon|solucionaron|resolvieron)(?: nada| bien)?",
    r"(?:nadie|nunca|no) (?:me )?(?:contestan?|contesto|regresaron|devolvieron)(?: (?:el|la|las) \w+)?",
    r"(?:puro|puros|nomas|solo) (?:sacar|cobrar|gastos?|dinero|robo)(?: \w+){0,3}",
    r"(?:uy|ay|oh|huy|wow) (?:que (?:bien|bonito|padre|chido))?,? ?(?:otro|otra|mas) (?:\w+)",
    r"(?:mecanico|muchacho|senor|tipo|empleado) (?:\w+ )?(?:fue|es|muy|bien) (?:\w+ )?(?:groser|malcriad|"
    r"pelad|maleducad)\w+",
    r"no dijeron nada",
    r"que (?:decepcion|fastidio|lata|pena de|coraje|mal trato)(?: \w+)?",
    r"(?:deja|dejo|dejan) mucho que desear",
    r"(?:me siento|nos sentimos) (?:\w+ )?(?:enganad|robad|decepcionad|defraudad|molest|ofendid)\w+",
    r"(?:gracias|thanks) (?:por|for) (?:nada|nothing)",
    r"nadie (?:me |nos )?(?:devolv|regres|atiend|respond|avis|pel)\w+",
    r"dejaron (?:\w+ )?(?:llen[oa]|mugros[oa])(?: \w+)*",
    r"(?:quede|estoy|ando) (?:\w+ )?molest[oa]",
    r"(?:no (?:son|era|fue|es) (?:lo|los|la) que (?:me )?dij\w+)",
    r"no se vale",
    r"que clase de (?:negocio|taller|servicio)",
    r"(?:dejaron|dejan|dejo) (?:\w+ )?plantad[oa]s?",
    r"(?:factura|cuenta|cobro|recibo|nota) (?:\w+ ){0,3}(?:venia|vino|viene|salio|esta|estaba) (?:\w+ )?(?:mal|"
    r"equivocad[oa])",
    r"(?:trataron|trato|atendieron|atendio|hablaron|contestaron) (?:\w+ )?(?:mal|feo|gacho|horrible|grosero)",
    r"cobraron (?:\w+ ){0,4}de mas",
    r"nadie (?:me )?(?:\w+ )?(?:explica|explico|da la cara|hace caso|hizo caso)",
    r"(?:me |nos )?(?:cobraron|cobran|cobro|cobraste|estan cobrando) (?:\w+ )?(?:de mas|doble|"
    r"demasiado|mucho mas|dos veces|mal|algo que)",
    r"(?:pesim|mal|horribl|terribl|malisim|ps?imo)\w* (?:servicio|trabajo|atencion|experiencia|"
    r"taller|trato|negocio)",
    r"(?:servicio|trabajo|atencion|trato) (?:\w+ )?(?:pesim|mal|horribl|terribl|malisim|fatal|"
    r"lent)\w*",
    r"(?:muy|estoy|bien|bastante|super|tan) (?:\w+ )?(?:molest[oa]|enojad[oa]|decepcionad[oa]|"
    r"inconforme|insatisfech[oa]|frustrad[oa]|disgustad[oa]|encabronad[oa]|furios[oa]|hart[oa]|"
    r"indignad[oa])",
    r"(?:harto|harta|inconforme|decepcionad[oa])",
    r"no (?:estoy|quede|quedo|quedamos|estamos) (?:\w+ )?(?:content[oa]s?|satisfech[oa]s?|"
    r"conforme|a gusto|bien (?:mi|el))",
    r"(?:me |nos |mi |le )?(?:lo |la )?(?:rayaron|golpearon|danaron|descompusieron|arruinaron|"
    r"rompieron|mintieron|enganaron|robaron el dinero|estafaron|dejaron mal|hicieron esperar|"
    r"trataron mal|abollaron|mancharon|ensuciaron|perdieron)",
    r"(?:estafa|estafador\w*|rateros|ladrones|transas|tranza|abuso|abusivos|robo|sinverguenzas|"
    r"fraude)",
    r"queja(?:rme)?",
    r"reclam(?:o|ar|acion)",
    r"(?:tantos|demasiados|muchos|puros) (?:mensajes|textos)",
    r"por ?que (?:me )?(?:siguen|sigues|tanto|tantos|insisten|molestan|mandan tant\w+|"
    r"me (?:mandan|escriben|molestan|estan))",
    r"(?:siguen|sigues|insisten|estan|dale y dale|no dejan de) (?:\w+ )?(?:molestando|escribiendo|"
    r"mandando|insistiendo|chingando|fregando|molestar|mandar)",
    r"(?:como )?(?:molestan|chingan|friegan)",
    r"no (?:me )?(?:lo |la |los )?(?:arreglaron|quedo bien|repararon|hicieron nada|hicieron bien|"
    r"solucionaron|apretaron)",
    r"(?:sigue|siguio|quedo) (?:igual|peor|mal)(?! de)",
    r"devuelvan\w*",
    r"(?:mi|el) (?:reembolso|dinero de vuelta)",
    r"reembols\w+",
    r"grosero[s]?",
    r"que (?:mal (?:servicio|trabajo)|abuso|robo|falta de|verguenza|descaro|burla)",
    r"(?:otra vez|otra) (?:cuenta|cobro|gasto|lo mismo|con lo mismo)",
    r"(?:ay que bien|que bien|genial|perfecto|que padre|que bonito|maravilloso)[ ,.!]+(?:otra|"
    r"otro|mas) (?:cuenta|gasto|cobro|problema|mensaje)",
    r"(?:solo|nomas|nada mas|puro) (?:\w+ )?(?:quieren|buscan|sacar\w*|"
    r"piensan en) (?:\w+ )?(?:dinero|sacar\w*|vender|lana|cobrar)",
    r"nunca (?:me )?(?:llamaron|contestan|contestaron|avisaron|atendieron|regresaron)",
    r"nadie (?:me )?(?:contesta|llamo|atendio|aviso)",
    r"(?:ya )?(?:les|le|te) dije que no",
    r"cuantas veces",
    r"no (?:autorice|pedi) (?:ese|el|esos|eso|nada|ningun|mensajes)",
    r"perdida de tiempo",
    r"inaceptable",
    r"ridiculo",
    r"no vuelvo (?:mas|a ir|nunca)?",
    r"factura (?:\w+ )?(?:mal|equivocada|incorrecta|error)",
    r"(?:mala|pesima|terrible) (?:experiencia|atencion|resena)",
)
_NO_COMPLAINT = phrases(
    r"no (?:me |le |se |nos |lo )*(?:ha |han |he |hemos )?(?:vuelto a|volvio a|volvieron a|dado (?:ninguna? "
    r")?(?:lata|guerra|"
    r"problemas?|batalla)|dio (?:lata|guerra|problemas)|fallado|tronado|sonado|rechinado|vibrado|calentado|apagado|"
    r"tirado|goteado|jalado|prendido)(?: \w+){0,3}",
    r"cant complain",
    r"no (?:complaints?|quejas?)",
    r"not (?:mad|upset|angry|complaining)",
    r"spam (?:folder|filter)",
    r"no (?:me )?(?:quejo|puedo quejar\w*)",
    r"is (?:this|it) (?:a )?(?:scam|spam)",
    r"es (?:una )?estafa\?",
    r"es (?:un )?fraude(?: esto)?\?",
    r"not a (?:complaint|rip off)",
    r"(?:sorry|dont want) (?:to|for) (?:complain|bother)\w*",
    r"(?:hope|hopefully) (?:\w+ ){0,3}(?:rip|scam)\w*",
    r"no es queja",
    r"sin (?:ninguna )?quejas?(?: alguna)?",
    r"ninguna queja",
)
_NO_TO_AFTER_VISIT = re.compile(
    r"^(?:no+|not(?! (?:too |so |half |)bad) (?:really|at all|ok|great|good|happy)|nope|nah|"
    r"thumbsdown|not(?! (?:too |so |half |)bad)|no no|kinda|"
    r"could be better|so so|mas o menos|regular|mal|nada bien|no del todo|para nada|"
    r"mas mal que bien|meh|bad|terrible|horrible)(?= |\Z)(?! (?:problem|issues?|complaints?|"
    r"worries|questions?|problema|quejas|thanks|gracias|nada|all good))"
)


def holds(said: Said) -> bool:
    """Whether it is unhappy, or a no to whether all was well after a visit."""
    if said.asked == "after_visit" and any(
        _NO_TO_AFTER_VISIT.match(_NO_COMPLAINT.sub(" ", one).strip()) for one in said.parts
    ):
        return True
    if minds_number_or_hour(said.text):
        return True
    plain = _NO_COMPLAINT.sub(" ", said.text)
    return bool(_SAYS.search(plain) or _DICE.search(plain))
