"""`stop`: the customer takes back the consent to be texted, in a keyword or in free words."""

from __future__ import annotations

import re

from followup.core.replies import stop_answers, stop_grammar
from followup.core.replies.limits import is_about_one_subject, minds_number_or_hour
from followup.core.replies.said import Said, phrases
from followup.core.replies.words.entry import word_set

CODE = "stop"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "STOP", "Stop!!", "pls stop texting me", "take me off your list", "UNSUBSCRIBE please",
        "quit sending me these msgs", "lose my number", "opt-out", "enough with the texts already",
        "stop it already", "stop messaging this phone", "i want off this list", "get me off this thing",
        "no more txts", "dont send me anything else", "remove this # from ur records", "stop with the spam",
        "i asked u to stop", "how many times do i gotta say stop", "cease and desist", "dont ever contact me again",
        "this is harassment, stop", "please discontinue these messages", "stop blowing up my phone",
        "kindly remove me from your contacts", "not interested stop texting", "cancel these texts",
        "i never signed up for this take me off", "quit it with the texts", "revoke consent",
        "no more messages please", "stop sending this garbage", "please stop", "stop.. wrong person",
        "I'm asking you to stop contacting me", "dont want ur texts", "pull my number", "do not call or text",
        "knock it off with the texts", "I want to unsubscribe", "take us off your mailing list", "Remove",
        "stop stop", "hey stop texting my phone", "you dont have permission to text me",
        "never signed up, remove me", "quit spamming me", "stop please", "STOP texting", "pls remove me", "stop it",
        "i said stop", "don't text me", "do not message me", "take me off", "delete my number please",
        "stop sending texts", "enough texts", "unsubscribe now",
    ),
    "es": (
        "ALTO", "Basta ya", "no me manden mas mensajes x favor", "quitenme de su lista", "dejen de escribirme",
        "baja", "ya no quiero recibir mensajes", "paren de mandar textos", "ya parenle", "ya no me textien",
        "borrenme de su sistema", "no me esten molestando", "dejen de textear", "sakenme de la lista",
        "no me manden nada", "ya no me manden nada", "deme de baja porfavor", "no sigan mandando mensajes",
        "no quiero nada de ustedes, no escriban", "kiten mi numero", "ya stop", "ya basta con tanto mensaje",
        "no vuelvan a escribir", "olviden mi numero", "ya no manden", "dejen de enviarme cosas",
        "me quiero salir de esto", "salir", "no mas mensajes", "ya dejen de chingar con los mensajes",
        "para de mandarme textos", "ya no quiero mensajes", "por favor dejen de mandarme", "no me escriban mas",
        "sáquenme de ahi", "ya paren", "detengan los mensajes", "no autorizo que me escriban", "borren mi contacto",
        "quiero cancelar los mensajes", "no manden mas", "que ya no me manden", "alto", "no me manden mensajes",
        "ya no manden mensajes", "quitenme", "no escriban mas", "quiten mi numero de la lista",
        "dejenme de molestar", "no quiero mensajes",
    ),
}  # fmt: skip

KEYWORDS = word_set(
    "stop stopall unsubscribe end quit revoke optout alto baja cancelar cancel parar pare basta salir stp stopp",
    "sotp stpo tsop stoped arret enough detener detengan paren",
) | {
    "stop all",
    "opt out",
    "opt me out",
    "unsubscribe me",
    "unsubscribe all",
    "stop it",
    "stop this",
    "stop texts",
    "stop messages",
    "end texts",
    "stop texting",
    "dar de baja",
    "darme de baja",
    "no mas",
    "no more",
    "s t o p",
    "cancel all",
    "quit it",
    "end all",
    "i said stop",
    "stop stop",
    "stop stop stop",
    "stop means stop",
    "no stop",
    "yes stop",
    "stop yes",
    "i want to stop",
    "si alto",
    "stop me",
    "go away",
    "get lost",
    "leave me alone",
    "quit texting",
    "baja baja",
    "alto alto",
    "stop unsubscribe",
    "stop end",
    "stop immediately",
    "stop everything",
    "stop alto",
    "reply stop",
    "text stop",
    "stop sms",
    "fuck off",
    "piss off",
    "f off",
    "bug off",
    "buzz off",
    "shut up",
    "ya estuvo",
    "larguense",
    "remove",
    "remove me",
    "delete me",
    "delete",
    "stop bothering",
    "yeah stop",
    "ya stop",
    "parenle",
    "parele",
    "ya parenle",
    "just stop",
    "stop just stop",
    "ok stop",
    "no thanks stop",
    "stop now",
    "unfollow",
    "mute me",
    "mute",
    "block me",
    "no texts",
    "no texts ever",
}
_AFTER_COMMA = KEYWORDS - {
    "cancel",
    "end",
    "cancelar",
    "enough",
    "no more",
    "no mas",
    "salir",
    "quit",
    "delete",
    "remove",
    "stop it",
    "quit it",
    "pare",
    "parar",
}

_MESSAGES = r"(?:texts?|messages?|sms|reminders?|notifications?|alerts?|promos?|spam|ads|correspondence)"
_TEXTING = (
    r"(?:text|texting|message|messaging|sms|contact|contacting|bother|bothering|harass|harassing|"
    r"spam|spamming|bug|bugging|hit|hitting|blow|blowing|reach|reaching|remind|reminding|pester|"
    r"pestering|annoy|annoying)"
)
_FREE = phrases(
    r"(?:nobody|no one|i never|i didnt|we didnt|we never) (?:asked|signed up|subscribed) (?:for|"
    r"to) (?:\w+ ){0,2}(?:texts?|"
    r"messages?|reminders?|this spam)",
    r"(?:dont|do not|no longer|never|didnt) (?:\w+ )?(?:want|need|wish (?:for|to)|like|care (?:for|to)|"
    r"ask for) (?:to )?(?:see |get |receive |hear |have |be getting |getting )?(?:any (?:more )?|more |"
    r"anymore )?(?:of )?(?:these|this stuff|this crap|anything from you|from you|you contacting|your "
    r"(?:texts?|messages?))(?! (?:repairs?|tires?|brakes?|services?|done|fixed|times?|days?|dates?|"
    r"appointments?|parts))",
    r"no more of (?:these|this|your)",
    r"cut (?:it )?out (?:with )?(?:the|these|this|your)? ?(?:texts?|messages?|texting)",
    r"(?:pull|remove|delete|drop|nix|scrap) my (?:number|contact|info)",
    r"(?:do not|dont|never) (?:call|text|message|contact) (?:or|and|nor) (?:text|call|message|contact|"
    r"email)",
    r"(?:number|phone|line|cell)(?: \w+){0,4} (?:remove|take|delete) (?:it|this|me)",
    r"report(?:ed|ing)? (?:\w+ )?(?:as|for|to) (?:spam|harassment|the fcc|fcc|the ftc|abuse)",
    r"do not (?:reply|respond|text back)",
    r"take (?:this|my) (?:number|phone) off",
    r"(?:do not|dont|never|didnt) (?:consent|agree|opt in|subscribe|sign up) (?:to|for)?",
    r"(?:want|like) (?:\w+ ){0,3}(?:all |them all |these |it all |the texts |this )?to stop\Z",
    r"(?:dont|do not|never) (?:ever )?send (?:me |us )?(?:anything|nothing|stuff|any|these|this)(?: "
    r"(?:else|more|anymore|again|crap|stuff))*",
    r"want (?:to (?:be|get) )?(?:off|out of|removed from|taken off) (?:of )?(?:this|your|the|these) "
    r"(?:\w+ )?(?:list|texts?|thing|system|messages|database)",
    r"cease (?:and )?desist",
    r"(?:say|said|tell(?:ing)?|told|ask(?:ed|ing)?) (?:(?:you|yall|guys|people|them|it) )*(?:to "
    r")?stop(?=\Z|[.,!?])",
    r"(?:please )?(?:stop|quit|cease|discontinue) (?:all |any |further |this |these |your |the "
    r")*(?:communications?|contact|solicit\w*|outreach|correspondence|texts?|messages?)",
    r"(?:dont|do not|never) (?:ever )?(?:contact|text|message|reach out|bother|write)(?: to)?(?: me| us| "
    r"this number)?(?: ever)?(?: again| anymore| any more| no more)",
    r"do not (?:text|message|contact)(?: me)?\Z",
    rf"(?:stop|quit|cease|end|discontinue|halt|knock off) (?:\w+ ){{0,3}}(?:{_TEXTING}|{_MESSAGES}|sending)",
    r"(?:stop|quit) (?:with )?(?:all )?(?:this|these|the|your|ur) (?:\w+ )?(?:crap|nonsense|bs|"
    r"stuff|shit|junk|texts?|messages?)",
    rf"(?:dont|do not|please no|never|not) (?:you )?(?:ever |please |keep |"
    rf"have to )?(?:{_TEXTING}) (?:me|us|this|my|here|again|anymore|back|no more)",
    rf"(?:dont|do not|never) (?:ever )?send (?:me |us |any |anymore |more |this number |anything |"
    rf"these |another |no more )+(?:\w+ )?(?:{_MESSAGES}|again|anymore|stuff)?",
    rf"(?:dont|do not|didnt|no longer|never|not) (?:\w+ )?(?:want|wish|need|like|care|consent|"
    rf"agree|authorize|wanting|interested) (?:\w+ ){{0,4}}{_MESSAGES}(?! (?:me )?when)",
    r"(?:dont|do not|no longer) (?:want|wish|need|consent|agree|care) (?:\w+ )?(?:to )?(?:be |"
    r"get |getting |being |keep getting )?(?:texted|messaged|contacted|texting|reminded|bothered|"
    r"receiv\w+)",
    r"(?:dont|do not) want (?:you |u |yall |anyone )(?:\w+ ){0,2}(?:texting|messaging|contacting|"
    r"to (?:text|message|contact))",
    rf"no more (?:\w+ )?(?:{_MESSAGES}|texting|messaging|contact)",
    rf"(?:enough|sick|tired|fed up|done|over it|had it|had enough) (?:with|"
    rf"of) (?:\w+ ){{0,3}}(?:{_MESSAGES}|texting|spamming|harass\w+)",
    rf"enough (?:already )?(?:\w+ ){{0,2}}{_MESSAGES}",
    r"enough already",
    r"(?:stop|quit|enough with|done with)(?: with)? (?:the |all the |you )?asking(?: me| us)?(?=\Z|[.,!]| already| "
    r"please| again| now)",
    r"(?:thats|that is) enough",
    r"enough is enough",
    r"(?:take|remove|delete|erase|drop|get|scratch|pull|scrub|unlist|kick|cross|strike) (?:me|us|"
    r"my (?:\w+ )?(?:number|name|info|phone|contact|cell|information|data)|this (?:number|phone)|"
    r"this # )(?: \w+)? ?(?:off|from|out of)(?! (?:the|your|ur|my)? ?(?:schedule|calendar|books?|"
    r"appointment|tuesday|monday|shuttle|work|ride))",
    r"(?:remove|delete|erase|lose|forget) (?:my|this|our) (?:\w+ )?(?:number|name|info|phone|"
    r"contact|cell|information)",
    r"(?:remove|delete|unsubscribe) (?:me|us)\b(?! from the (?:schedule|calendar))",
    r"leave (?:me|us) (?:the \w+ )?alone",
    r"(?:get lost|buzz off|piss off|fuck off|f off|fuk off|screw off|bugger off|bug off|"
    r"get bent)",
    r"unsubscribe(?! button)",
    r"opt(?:ing|ed)? (?:me |us |myself )?out",
    r"optout",
    r"want out of (?:this|these|your)",
    r"(?:revoke|revoking|withdraw|withdrawing|rescind|take back) (?:\w+ ){0,2}(?:consent|"
    r"permission|authorization)",
    r"(?:dont|do not|no longer|never) (?:have )?(?:my )?(?:consent|permission)(?! to (?:work|fix|"
    r"repair|do|replace))",
    r"(?:put|place) (?:me|my number|this number) on (?:\w+ ){0,2}(?:do not (?:call|text|contact)|"
    r"no ?(?:call|text|contact))",
    r"do not (?:text|contact|call) list",
    rf"cancel (?:\w+ ){{0,3}}(?:{_MESSAGES}|subscription|texting)",
    rf"(?:turn|shut|switch) off (?:\w+ ){{0,2}}{_MESSAGES}",
    rf"(?:turn|shut|switch) (?:the|these|those) {_MESSAGES} off",
    r"(?:im |ill |going to |gonna |am )?block(?:ing|ed)? (?:you|u|this number|yall)",
    r"(?:report|reporting|reported) (?:you|this|u|yall)(?: \w+){0,3} (?:spam|fcc|harassment|ftc)",
    r"lawyer up if you text",
    r"never contact (?:me|us|this)",
    r"(?:please )?stop (?:it )?(?:already|now|immediately)\Z",
    r"i (?:already )?(?:said|told you(?: guys)?(?: to)?|texted|replied|asked you to) stop",
    r"stop contact",
    r"stop reaching",
    r"make (?:it|this|these|them) stop",
    r"no (?:text|texts|texting|sms) please",
    r"no (?:texts|texting|sms)\Z",
)
_MENSAJES = (
    r"(?:mensajes?|mensajitos|textos?|msgs?|sms|recordatorios?|avisos?|notificaciones|publicidad|"
    r"promociones|spam|mensajeria)"
)
_LIBRE = phrases(
    r"dej(?:en|enme|eme|ame|en)(?:me)? de molestar(?:me)?",
    r"no (?:quiero|deseo|queremos|necesito) (?:que me (?:llegue|manden|envien)|recibir|seguir recibiendo|"
    r"saber|que me llegue) (?:\w+ )?(?:nada|mas|de ustedes|cosas|esto|estos|nada de ustedes)",
    r"no quiero (?:saber )?(?:mas )?nada de ustedes",
    r"(?:ya )?no (?:los|las|lo) (?:quiero|deseo|queremos|quisiera) (?:seguir )?(?:estar )?recib\w+(?: mas| "
    r"ya)?(?=\Z|[.,!])",
    r"(?:ya )?no (?:quiero|deseo|queremos|quisiera) (?:seguir |estar )?(?:recibir|recibiendo)(?:l[oa]s?)(?: mas| "
    r"ya)?(?=\Z|[.,!])",
    r"(?:(?:deten|par(?!a\b)|cancel|quit|suspend|elimin)\w*n?|(?:^|(?<=[.,!?] )|(?<=ya )|(?<=favor ))para) (?:ya "
    r")?(?:los|"
    r"estos|sus|esos) (?:mensajes|textos|avisos|recordatorios)",
    r"(?:ya )?no (?:me |nos |le )?(?:esten? |sigan? |anden? )?(?:mand(?:en?|es)|envi(?:en?|es)|"
    r"escrib(?:an?|as)|te(?:x|s)t(?:een?|ees|ien?|ies|eyen)|contact(?:en?|es)|busquen?)(?: (?:ya|mas|nada|"
    r"nunca|otra vez|a este (?:numero|telefono)))*(?=\Z|[.,!])",
    r"(?:dejen?|deja|dejar|par(?:en?|a|ar)|basta|eviten?) de (?:\w+ )?(?:estar |andar )?(?:mand|envi|"
    r"escrib|molest|text|ching|freg|fastidi|jod|acos|insist)\w*",
    r"alto (?:ya )?(?:a|con) (?:los|sus|tus|tanto|tantos|estos|esos) (?:mensaj\w+|textos?|msgs?|recordatorios|avisos)",
    r"par(?:en?|a)(?:le|n)? (?:ya )?con (?:\w+ )?(?:mensajes?|textos?|eso|esto)",
    r"(?:salir(?:me)?|sacarme|quitarme|borrarme|salgo) de (?:esto|aqui|(?:la|su|esta|esa) lista|los "
    r"mensajes)",
    r"(?:qui[tc]|sak|saqu|borr|elimin|remuev|retir)\w*(?:nme|eme|ame)(?: ya)?(?=\Z|[.,!])",
    r"(?:qui[tc]en|saquen|borren|eliminen|quita|borra|saca|elimina) (?:mi|este) (?:numero|telefono|"
    r"contacto|nombre|celular|cel)",
    r"(?:dejen?|deja|dejar|pare|paren|parenle|parele|basta|cesen|ya|"
    r"eviten?) de (?:\w+ )?(?:estar |andar )?(?:mand\w+|envi\w+|escrib\w+|molest\w+|text\w+|"
    r"mensaj\w+|contact\w+|acos\w+|chingar|fregar|fastidiar)",
    r"no (?:me |nos )?(?:vuelvan? a |vuelvas a |sigan? |estes? |esten )?(?:mand(?:en?|es|ar|ando)|"
    r"envi(?:en?|es|ar|ando)|escrib(?:an?|as|ir|iendo|irme)|text(?:een|ees?|ear|eando|earme)|"
    r"molest(?:en?|es|ar|ando|arme)|contact(?:en?|es|ar|arme)|mensaj\w+|manden\w*)(?! (?:la cita|"
    r"el carro|cotizacion|grua|a nadie))",
    rf"no (?:quiero|deseo|necesito|me interesa(?:n)?|queremos|acepto|"
    rf"autorizo) (?:\w+ ){{0,4}}{_MENSAJES}",
    r"no (?:quiero|deseo) que me (?:\w+ ){0,2}(?:mand\w+|escrib\w+|envi\w+|molest\w+|contact\w+|"
    r"text\w+)",
    rf"(?:no|ni un|ya no|basta de|nada de) (?:mas )?{_MENSAJES}(?! (?:de|sobre))",
    rf"(?:ya )?no (?:me )?(?:llegu\w+|quiero) (?:mas )?{_MENSAJES}",
    r"(?:quit|saqu|borr|elimin|remuev|retir|dese?n?)\w*(?:nme|eme|ame|nos) (?:\w+ ){0,3}(?:lista|"
    r"registro|sistema|numero|base|contactos|baja|grupo)",
    r"(?:quitenme|quiteme|quitame|saquenme|saqueme|sacame|borrenme|borreme|borrame|eliminenme|"
    r"elimineme|eliminame|remuevanme)(?! (?:la cita|de la agenda|el|las? llantas?))",
    r"(?:quit\w+|saqu\w+|borr\w+|elimin\w+|retir\w+) mi (?:numero|telefono|contacto|nombre|celular)(?! de la agenda)",
    r"(?:dar(?:me|se)?|denme|deme|dame|dar|quiero(?: la| mi)?|solicito(?: la)?|me doy|"
    r"pido(?: la)?) (?:de )?(?:la )?baja",
    r"dej\w+ ?(?:me|nos)? en paz",
    r"(?:dejenme|dejame|dejeme|dejenos) (?:tranquil[oa]|en paz|sol[oa])",
    r"(?:cancel\w+) (?:\w+ ){0,2}(?:suscripcion|mensajes|textos)",
    r"(?:revoco|retiro|quito) (?:mi |el )?(?:consentimiento|permiso|autorizacion)",
    r"ya no me (?:manden?|envien?|escriban?|molesten?|texteen|busquen|contacten)",
    r"no autorizo",
    r"ya basta(?=\Z|[.,!]| (?:por favor|porfa|de (?:tant|mensaj|text|molest|escrib|mand)))",
    r"ya estuvo bueno",
    r"ya estuvo(?=\Z|[.!])",
    r"olviden(?:se de)? mi numero",
    r"(?:los|las|te|lo) voy a bloquear",
    r"no (?:me )?(?:molesten|molestes|molestar|fastidien|esten molestando|chinguen|frieguen)",
)
_HARMLESS = phrases(
    r"no (?:me |nos )?mand\w+ (?:a|con|para) otr[oa]s? (?:lado|taller|parte|persona|sucursal|mecanico)",
    r"se (?:me |le |nos )?(?:borro|borraron|perdio|elimino) (?:\w+ ){0,2}\w+",
    r"(?:para|por) no molestar\w*",
    r"(?:saqu|sac)\w*(?:nme|eme|ame) (?:un[oa]? (?:cita|turno|espacio|copia|presupuesto|lugar)|de (?:la|una) duda|"
    r"de dudas)",
    r"no (?:me |lo |los |la |las )?(?:quit|borr|saqu|elimin|cancel|paren|suspend|desactiv|bloque)\w* (?:mi|este|el|"
    r"del?|los|sus|"
    r"mis|la)(?: \w+){1,3}",
    r"no (?:un |una |con |quiero )?(?:mensajes?|textos?|robots?|maquinas?) (?:automatic\w+|de robot|de maquina|"
    r"grabad\w+)",
    r"no need to (?:stop|unsubscribe|opt out|remove|delete|take me off)(?: \w+){0,3}",
    r"(?:please )?(?:dont|do not|never) (?:ever )?stop (?:the |my |sending |texting |with )?(?:\w+ "
    r"){0,2}(?:texts?|messages?|reminders?|me|alerts?)",
    r"como (?:le )?(?:\w+ )?(?:hago|hacer|hacerle) (?:para )?(?:que )?(?:\w+ ){0,5}(?:mand|envi|escrib|"
    r"molest|lleg)\w*(?: mas)?(?: mensajes)?",
    r"como (?:cancelo|paro|detengo|quito|salgo|dejo|me (?:quito|salgo|doy|borro|saco)|"
    r"se (?:cancela|quita|para))(?: \w+){0,5}",
    r"(?:how|como) (?:do|can|to|would|puedo|le hago|hago|le) (?:\w+ ){0,4}(?:stop|unsubscribe|"
    r"opt out|get off|get these|end|parar|cancelar|dar)\w*",
    r"dont (?:ever )?stop (?:texting|sending|the|reminding)",
    r"dej\w+ de (?:escrib|text|mand|mensaj)\w* y (?:mejor )?(?:llam|marqu|marc|habl)\w+",
    r"no (?:me )?(?:dejen|deje|paren|pare|cesen) de (?:mandar|avisar|escribir)\w*",
    r"didnt (?:get|receive|see|want to bother)",
    r"no (?:need|problem) (?:\w+ )?(?:text|message)\w* (?:is|are) (?:fine|ok)",
    r"stop (?:by|in|over|at|sign|light)",
    r"(?:stop|quit) blow(?:ing)? (?:smoke|hot air)",
    r"dont (?:bother|bug) (?:with|about|to|coming|doing|fixing|ordering)",
    r"(?:dont|do not) (?:text|message) (?:and|while|n) driv\w+",
    r"(?:i )?(?:cant|dont|wont|didnt|never|do not) (?:usually |really |always )?(?:text|"
    r"message)(?: you)? (?:and drive|while|much|at work|well|back)",
)


_SICK_OF_IT = re.compile(
    r"^\W*(?:please |ok |hey |guys )?(?:(?:oh )?for (?:the love of )?(?:god|gods|petes?|christs?|goodness|crying out "
    r"loud|heavens?|all that is "
    r"holy)(?: sakes?)?|good (?:god|grief|lord)|jesus|dear god|por (?:el amor de )?dios|por favor|dios mio|my god|omg|"
    r"ya|enough)[,!. ]*"
    r"(?:ya |just |please )?(?:enough|stop|basta|parenle|paren|enough now)\W*$"
)
_SHOUTED = re.compile(
    r"^\W*STOP\b(?! *(?:BY|IN|AT|OVER|SIGN|LIGHT|ENGINE|VEHICLE|LAMP|SAFELY|WARNING)\b)(?=[^a-zA-Z]*[a-z])"
)
"""The keyword in capitals before words that are not: what our own texts ask for."""


_OF_A_STORY = frozenset({"no more", "no mas", "enough", "delete", "remove"})
"""What may end a story about visits (`Waited three hours. No more.`); never one of the reply contract's keywords."""
_ABOUT_TEXTS = re.compile(
    r"\b(?:text\w*|messag\w*|number|phone|list|sms|spam|contact\w*|reminders?|notif\w*|mensajes?|textos?|lista|numero|"
    r"telefono|recordatorios?|escrib\w*|mand\w*|stop|alto|baja|consent\w*|sign\w*|subscri\w*)\b"
)
_STORY = re.compile(
    r"\b(?:waited|wait|came|come|went|paid|charged?|fix\w*|repair\w*|visit|shop|service|bill|hours|tow\w*|espere|"
    r"pague|cobr\w+|"
    r"fui|lleve|arregl\w+|taller|visita|horas)\b"
)


def is_keyword(said: Said) -> bool:
    """Whether a keyword is the whole text or a sentence of its own."""
    found = {one for one in said.bare if one in KEYWORDS} | {one for one in said.clauses if one in _AFTER_COMMA}
    if not found:
        return False
    others = " ".join(one for one in said.bare if one not in KEYWORDS)
    is_story = found <= _OF_A_STORY and bool(others) and bool(_STORY.search(said.text))
    return not is_story or bool(_ABOUT_TEXTS.search(others))


def holds(said: Said) -> bool:
    """Whether the consent is taken back."""
    if said.asked == "confirm_stop" and stop_answers.agrees(said):
        return True
    if is_keyword(said) or _SHOUTED.match(said.received):
        return True
    if _SICK_OF_IT.search(said.text):
        return True
    plain = stop_grammar.without_other_uses(_HARMLESS.sub(" ", said.text), said.has_booking)
    if stop_grammar.gives_back(plain):
        return False
    if not (_FREE.search(plain) or _LIBRE.search(plain) or stop_grammar.takes_back(plain)):
        return False
    return not (minds_number_or_hour(plain) or is_about_one_subject(plain))
