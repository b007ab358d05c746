"""`decline`: the customer says no without giving a date to come back to."""

from __future__ import annotations

import re

from followup.core.replies.limits import is_about_one_subject, is_for_good
from followup.core.replies.said import Said, phrases

CODE = "decline"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "no", "no thanks", "not interested", "im good", "nah ill pass", "dont need it", "too expensive for me",
        "nope", "hard no", "no thx", "i do my own work", "ill take my chances", "we're all set", "not gonna do it",
        "no need", "i got a guy for that", "ill do it myself", "gonna pass", "not worth it on this car",
        "dont want it", "thanks but no", "yeah right", "not at those prices", "i go to the dealer for that",
        "im fine", "n", "ill skip it", "nah its ok", "no thank you sir", "dont waste ur time", "not for me",
        "gonna have to say no", "nah", "no need thanks", "I'm all set", "we'll pass", "no i dont want that",
        "not interested at this time thanks", "nope im good", "no, too much money", "going somewhere else",
        "ill fix it myself", "don't think so", "not needed", "thanks anyway", "im ok", "id rather not", "no sir",
        "not worth the money", "nothing needed", "leave it", "no im fine", "no way jose", "i think ill pass",
        "im set for now thanks", "were fine thanks", "negative", "no interest", "dont think ill be needing that",
        "not gonna bother", "nah were good", "its fine how it is", "we have someone", "ill pass on that",
        "thank you but no", "i'd rather take it elsewhere", "no not interested sorry", "nope thanks",
    ),
    "es": (
        "no", "no gracias", "no me interesa", "asi estoy bien", "no hace falta", "esta muy caro, paso", "nel",
        "no ocupo", "nop", "mejor no", "no quiero", "yo lo hago", "tengo mi mecanico", "no lo necesito",
        "asi dejelo", "no es necesario", "muy caro ahi", "ni loco", "para nada", "no gracias estoy bien",
        "no me conviene", "no voy a gastar en eso", "lo arreglo yo en la casa", "ya no gracias", "pa que, no",
        "no por ahi no", "ahi muere, no gracias", "no vale la pena", "sale muy caro", "no, asi dejalo", "no senor",
        "no, gracias", "no lo voy a hacer", "no me hace falta", "esta caro", "mejor no gracias",
        "no, yo lo arreglo", "estamos bien", "ya no", "no necesito nada", "no gracias, voy a otro taller",
        "no por favor", "dejelo asi", "no, ya tengo", "no por hoy, gracias", "no nos interesa", "gracias pero no",
        "no la necesito", "asi la dejo", "no, muy amable", "no, para que", "no me hace falta gracias", "ni al caso",
    ),
}  # fmt: skip

_NO_START = re.compile(
    r"^(?:(?:hi|hello|hey|ok|oh|hola|um|well|pues|yeah|uh|hmm|thanks|thank you|gracias|sorry|"
    r"buenas?|tardes|dias|lol|haha|ah|aah|naw|ay|mmm|sir|que|actually|good (?:morning|afternoon|"
    r"evening)) )*(?:no+|nope|na+h?|n|negative|thumbsdown|no way|no sir|no maam|nones|nel|nop|"
    r"(?:hell|heavens|goodness|oops|god|lord) no)(?= |\Z)(?! (?:worries|worry|problem|prob|probs|idea|rush|"
    r"later than|earlier|"
    r"preference|one|more|doubt|clue|wonder|se|hay problema|pasa nada|tengo preferencia|"
    r"te preocupes|importa|perdon|espera|digo|issues?|need to wait|matter|wait|wrong|particular|es (?:problema|"
    r"molestia)|body|brakes?|power|start|heat|ac|noise|para|arranca|prende|frena|funciona|conozco|"
    r"soy|(?:los|las|te|le|les|lo|la) conozco|es mi|es el|se quien|tengo (?:carro|coche|auto)|"
    r"hay nadie|(?:me|se|lo|la|los|las|le|les|nos|te|tend\w+|podr\w+|habr\w+|pueden?|hay|quede|quedo|estoy|entiendo|"
    r"fue|era|tienen?|hace|vi|"
    r"ha|han|he|se|da|entran?|agarran?|responden?|prende|enciende|jala) \w|da marcha))"
)
_SAYS = phrases(
    r"(?:leaving|leave) (?:it )?alone",
    r"(?:im|i am) (?:declining|passing|skipping)(?: on)?(?: \w+)?",
    r"never again",
    r"(?:my|the) (?:\w+ )?(?:husband|wife|son|dad|father|brother|uncle|cousin|nephew|buddy|friend|neighbor|"
    r"boyfriend)(?: in law)? (?:is|s|was) an? (?:\w+ ){0,2}(?:mechanic|tech\w*)",
    r"let it (?:be|ride|go)(?=\Z|[.,!])",
    r"(?:leav(?:e|ing) (?:it|that|them|things) (?:alone|be)|let sleeping dogs lie)",
    r"(?:manage|do|get by|live) (?:just fine |fine )?without(?: it| that)?(?=\Z|[.,!])",
    r"make do",
    r"(?:heavens|goodness|oops|god|lord|gosh) no",
    r"(?:im|we are|were) (?:all )?set(?: for now)?(?: thanks| thank you)?\Z",
    r"(?:we|were|we are) fine(?: thanks| thank you)?\Z",
    r"(?:it is|its) fine (?:how|the way|as) (?:it )?is",
    r"(?:i|we) (?:already )?have someone(?: \w+){0,3}",
    r"(?:car|truck|van|it|that|everything|tires? (?:are|look)|brakes? (?:are|feel)) (?:is |are |s |runs |"
    r"drives |running |works )?(?:\w+ )?(?:fine|good|great|ok|perfect)(?: as is| thanks| thank you)?(?=\Z|"
    r"[.,!])(?<!sounds good)(?<!that is fine)(?<!that is good)(?<!that is great)(?<!that is ok)(?<!that "
    r"is perfect)(?<!it is fine)(?<!it is good)(?<!it is ok)(?<!it is perfect)(?<!it is great)",
    r"(?:appointment|visit|booking) (?:elsewhere|somewhere else|at another)",
    r"(?:says?|said|saying) no\b",
    r"not paying (?:for|that|this)(?: \w+){0,3}",
    r"when pigs fly",
    r"hell freezes(?: over)?",
    r"in your dreams",
    r"fat chance",
    r"^as if\Z",
    r"dream on",
    r"not in a million(?: \w+)?",
    r"thanks? (?:you )?(?:anyway|any way|regardless)",
    r"(?:nothing|none) (?:is )?(?:needed|required|necessary)",
    r"(?:so|say|saying|be a|its a|that is a|still) no\Z",
    r"(?:decided|chose|chosen|opted|choosing|elected) (?:not|against)(?: \w+)?",
    r"nice try",
    r"good on (?:the )?(?:tires?|brakes?|oil|that|those|everything|service|wipers?|fluids?|filters?)",
    r"not (?:fix|fixing|doing|bother|bothering|repairing|replacing) (?:it|that|this|them|anything)",
    r"(?:warranty|dealer|insurance) (?:covers|handles|takes care of|does) (?:it|that|them)",
    r"not (?:putting|spending|sinking) (?:a |another |any |more )*(?:dime|money|cent|penny|dollar)(?: "
    r"\w+){0,3}",
    r"hard no",
    r"i (?:usually |always |just |can )?(?:do|change|fix|service) (?:all )?(?:my|our) own(?: \w+)*",
    r"(?:take|taking) my chances",
    r"(?:i|we) (?:\w+ )?(?:got|have|use|know) (?:a|my own|my|another|our) (?:guy|mechanic|dealer\w*|shop|"
    r"garage)(?: \w+){0,4}",
    r"(?:yeah|ya|oh|sure|uh) right(?=\Z|[.,!])",
    r"not at (?:those|that|these|your) (?:prices?|cost)",
    r"(?:i|we) (?:\w+ )?(?:go|use|take it|take them|take mine) (?:to )?(?:the |a |another |my "
    r")?(?:dealer\w*|another (?:shop|place)|guy|mechanic|different)(?: \w+){0,3}",
    r"(?:dont|do not|quit|stop) wast(?:e|ing) (?:your|my|ur) time",
    r"(?:have|going|gonna|had) to say no",
    r"(?:hell|heck|fuck|absolutely|definitely|def) no(?:t)?",
    r"no (?:sir|maam|way|dice|dude|bro|man)",
    r"(?:take|taking|bring|bringing) it to (?:my|a|another|the) (?:guy|mechanic|friend|dealer\w*|shop|"
    r"buddy|brother|cousin)",
    r"(?:my|the) (?:\w+ )?(?:nephew|son|brother|husband|cousin|dad|father|buddy|friend|uncle|neighbor|"
    r"wife|boyfriend)(?: in law)? (?:is|s|was) a (?:mechanic|tech)",
    r"(?:not|aint|isnt) (?:going to |gonna )?(?:spend|spending|put|putting|pay|paying|worth|dropping|"
    r"drop)(?:ing)? (?:\w+ ){0,3}(?:money|that|it|on|into)",
    r"(?:ill|i will|gonna|going to) (?:just )?skip(?: it| this)?",
    r"no (?:need|reason)(?: to)?",
    r"(?:nah|no|naw),? (?:it|that|thats|that is|its) (?:is )?(?:ok|alright|all right|fine|good)",
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
    r"(?:got|have|own|using|use) (?:all )?(?:my|our) own (?:tools?|wrench\w*|lift|jack|garage|shop|mechanic|guy)(?: "
    r"\w+){0,2}",
    r"(?:do|doing|did) (?:all )?(?:my|our) own (?:work|repairs?|maintenance|wrenching|oil|brakes|service)(?: \w+){0,2}",
    r"not (?:going to|gonna|about to) (?:check|look|bother|go (?:out|look|check))(?: \w+){0,3}",
    r"let (?:it|this one|that one|things|her) (?:ride|go|slide|be)(?=\Z|[.,!]| for now| this time| thanks)",
    r"thumbsdown",
    r"maybe not",
    r"not today thanks",
    r"^not really\Z",
    r"(?:id|i would) prefer not",
    r"forget (?:it|about it)",
    r"^never ?mind\Z",
    r"^nvm\Z",
    r"changed my mind",
    r"(?:drive|run|ride|driving|running)(?: \w+){1,3} (?:until|til+) (?:it|she|he|the \w+) (?:\w+ )?(?:quits|dies|"
    r"falls?|goes|blows|gives)(?: "
    r"\w+){0,2}",
    r"not (?:telling|giving|sharing)(?: (?:you|u|yall|them|that|it))+",
    r"(?:thats|that is|its|it is) (?:private|personal|my (?:own )?business)",
    r"(?:got|have|know) (?:a|my) (?:buddy|friend|cousin|neighbor|uncle|brother) (?:\w+ ){0,4}(?:does|do|fixes|"
    r"handles) (?:it|that|mine|them)",
    r"none of (?:your|ur|yalls) (?:business|concern|beeswax)",
    r"(?:son|brother|nephew|cousin|uncle|dad|husband|buddy|friend|neighbor|father|boyfriend)(?: (?:in|n) law)? "
    r"(?:wrenches|turns wrenches|works on "
    r"cars)(?: \w+){0,3}",
    r"(?:he|she|they) (?:takes?|will take|always takes?) care of (?:it|ours|mine|them|that|all)(?: \w+)?",
    r"(?:happy|good|fine|stick\w*|satisfied) with (?:our|my|the) (?:\w+ )?(?:guy|mechanic|shop|man|place|garage)(?: "
    r"\w+){0,4}",
)
_DICE = phrases(
    r"ni al caso",
    r"^que va\b(?! a)",
    r"ni (?:de|en|por) (?:chiste|broma|suenos?|pedo|casualidad)|ni a palos|ni muert[oa]|nanai|nel pastel",
    r"(?:estamos|estoy|todo) bien(?:,? gracias)?(?=\Z|[.,!])",
    r"^ya no\Z",
    r"^negativo\b",
    r"(?:fijese|fijate|la verdad|asi|yo creo|creo|digo) que no(?=\Z|[.,!])",
    r"prefiero (?:que )?no(?: \w+)?",
    r"(?:he )?decid\w+ (?:que )?no(?: \w+)?",
    r"(?:a mi )?no me (?:apunt|anot|agend)\w+",
    r"no le veo (?:el caso|sentido|caso)",
    r"ni pensarlo",
    r"no le (?:voy a meter|meto|invierto)(?: \w+){0,2}",
    r"no (?:se )?(?:l[aoe]s?|te) (?:\w+ )?(?:voy|vamos|pienso|quiero|doy) (?:a )?(?:\w+ )?(?:dar|decir|mandar|pasar|"
    r"compartir)",
    r"gracias de todos modos(?= no)",
    r"no (?:lo|la|los|las) (?:voy|vamos|pienso|quiero|quisiera) (?:a )?(?:arregl|hac|cambi|repar|llev)\w+",
    r"(?:ya )?tengo quien (?:me )?(?:lo|la|los|las|le|se)? ?\w+",
    r"asi (?:la|lo|los|las) (?:dejamos|dejo|dejare|voy a dejar)",
    r"(?<!no )(?<!si )(?:yo )?(?:lo|la|los|las) (?:hago|arreglo|cambio|reparo|checo)(?: yo)?(?: "
    r"mismo| solo| en (?:la |mi "
    r")?casa)?(?=\Z|[.,!]| en| yo| mejor)",
    r"yo (?:solo|mismo|le|lo|se)(?: (?:mismo|solo))? (?:le |lo |se lo |la |los )?(?:hago|cambio|arreglo|"
    r"reparo|pongo)(?: \w+){0,3}",
    r"(?:tengo|yo tengo|ya tengo|uso|voy con|llevo con) (?:a )?(?:mi|un|otro) (?:\w+ )?(?:mecanico|taller|"
    r"compadre|amigo mecanico)",
    r"(?:mi|un) (?:hijo|esposo|hermano|primo|cunado|compadre|amigo|sobrino|papa|tio|vecino|marido) (?:es|"
    r"trabaja de|sabe de) mecanic\w+",
    r"asi (?:dejel[oa]|dejal[oa]|esta bien|le dejamos|lo dejamos)",
    r"(?:deje|deja|dejen|dejel|dejal|dejenl)[oa]? asi",
    r"(?:sale|salen|esta|estan|es) (?:\w+ )?car(?:o|a|os|as|isimo)(?: \w+){0,2}(?!\?)(?=\Z|[.,!])",
    r"no (?:senor|senora|joven|amigo|hombre|mano|manches|vale la pena|voy a gastar|gasto|quiero "
    r"gastar)(?: \w+){0,3}",
    r"ahi muere",
    r"(?:ya )?no (?:lo |la |los )?(?:ocupo|ocupamos)",
    r"(?:muy|bien|super|re) car(?:o|a|os|as)(?! ?\?)",
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
    r"(?:muy|demasiado|bien|esta|que) car[oa]s?(?! ?\?)",
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
    r"asi (?:l[oa]s? )?(?:manejo|sigo|traigo|uso) hasta(?: \w+){1,3}",
    r"l[oa] voy a (?:traer|manejar|usar|andar|dejar) asi(?: \w+){0,4}",
)
_SOMEBODY_DOES_IT = phrases(
    r"(?:lease|leese) (?:is |will be )?(?:up|over|done|ends?|ending|expires?|runs? out)[^.?!]*(?:dealer|not my|no "
    r"point|why bother|their|problem|"
    r"headache)(?: \w+)*",
    r"(?:l[oae]s? )?(?:voy a|vamos a|puedo|pienso) (?:hacer|cambiar|arreglar|reparar)(?:l[oae]s?)? yo(?: mismo| solo)?",
    r"mi (?:espos[oa]|marido|hij[oa]|herman[oa]|papa|cunad[oa]|compadre|vecin[oa]|prim[oa]|ti[oa]|suegro|novio|"
    r"amig[oa]|yerno|"
    r"sobrin[oa]|viejo)(?: \w+)? (?:me|nos|se|le) (?:l[oae]s? )?(?:ve|checa|hace|arregla|revisa|repara|va a (?:ver|"
    r"checar|hacer|"
    r"arreglar|cambiar|revisar|reparar)|hara|vera)(?=\W|$)",
)
"""`mi primo me lo ve`: the work goes to somebody of the customer's own."""
_NO_DECLINE = phrases(
    r"(?:no|much|any|a|other|real) choice",
    r"no (?:es necesario|hace falta|hay que|tienen? que) (?:cambi|mov|cancel|reprogram|reagend)\w+",
    r"too (?:much|long|hard) to (?:type|text|explain|write)(?: \w+)?",
    r"not a good time",
    r"no es (?:un )?buen momento",
    r"no (?:les |le )?confio(?: \w+)*",
    r"no tengo guardado(?: \w+)*",
    r"no es de aqui",
    r"no tengo ese (?:carro|coche)(?: \w+)*",
    r"(?:that is|thats) (?:great|good|awesome|perfect|fine) thanks",
    r"cant say no(?: to \w+)?",
    r"dont see why not",
    r"(?:no|nah) (?:yeah|yes)\b",
    r"no doubt",
    r"no,? si (?:quiero|voy|puedo|me)",
    r"ni modo",
    r"no changes?",
    r"no (?:la )?cancel\w*",
    r"dont mind if",
    r"no es aqui",
    r"no,? (?:esta|estas) marcando",
    r"no sirvio(?: \w+)*",
    r"too (?:much|many) (?:\w+ )?(?:going on|stuff|on my plate|to do)",
    r"no (?:tienen?|hay|habra|tendran?) (?:\w+ ){0,3}(?:para|el|antes|despues|mas|otra|lugar|cita|"
    r"espacio)(?: \w+)?",
    r"no (?:me |se )?(?:tiene[ns]?|tend\w+|hay|habr\w+|puede[ns]?|podr\w+|seria)(?: [\w:]+){1,8} ?\?",
    r"do i (?:have|need) to",
    r"no (?:le |me |se )?(?:entran?|agarran?|da marcha|prende|enciende|arranca|jala|frena|para|"
    r"responde)\w*",
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
    if any(_NO_START.match(_NO_DECLINE.sub(" ", one).strip()) for one in said.parts):
        return True
    if is_about_one_subject(plain) or is_for_good(plain):
        return True
    return bool(_SAYS.search(plain) or _DICE.search(plain)) or goes_to_somebody(said)


def goes_to_somebody(said: Said) -> bool:
    """Whether somebody of the customer's own will do the work."""
    return bool(_SOMEBODY_DOES_IT.search(said.text))


def starts_with_no(said: Said) -> bool:
    """Whether a part of the text begins with a plain no."""
    return any(_NO_START.match(one) for one in said.parts)
