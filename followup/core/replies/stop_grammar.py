"""How a consent is taken back in free words: ceasing, removing, refusing, being left alone; and what only sounds so.

Verbs, what is sent, whose number and the list are parts from which the phrases are made, in both languages.
"""

from __future__ import annotations

import re

from followup.core.replies.said import phrases

_SENT = (
    r"(?:texts?|text messages?|texting|messages?|messaging|msgs?|sms|reminders?|notifications?|alerts?|promos?|"
    r"promotions?|spam|ads?|blasts?|pings?|"
    r"correspondence|communications?|solicitations?|nonsense|crap|bs|junk|garbage|stuff|things?)"
)
_WORK = (
    r"(?! (?:done|fixed|repaired|replaced|checked|repairs?|services?|tires?|brakes?|parts?|appointments?|times?|"
    r"days?|slots?|dates?))"
)
_PHONE = r"(?:phone|cell|mobile|number|line|inbox|device|screen)"
_TEXT = r"(?:texts?|text messages?|messages?|sms|reminders?|notifications?|spam)"
_CEASE = (
    r"(?:stop|stahp|stawp|stoppp*|quit|cease|discontinue|end|halt|kill|terminate|suspend|disable|deactivate|axe|"
    r"nix|cancel|drop|lose|shut down|cut)"
)
_OFF = r"(?:turn|switch|shut|knock|lay|call|cut)"
_REMOVE = (
    r"(?:remove|delete|take|erase|scrub|strike|cross|x|ditch|drop|pull|get|scratch|wipe|rmv|rmove|purge|clear|"
    r"eliminate|nix|zap|boot|kick|unlist|dump|lose|"
    r"forget|scrap|toss|throw away|trash|cut|keep|leave|want|need|unenroll|unregister|yank)"
)
_MINE = (
    r"(?:me|us|(?:my|our|this|the) (?:\w+ )?(?:number|cell|phone|line|name|info|information|contact|contacts|"
    r"details|data|device|no|digits|email)|this|it|mine)"
)
_LIST = (
    r"(?:lists?|records?|files?|system|database|computer|robot|contacts?|texts?|reminders?|mailings?|phone ?book|"
    r"rolodex|texting|group|thread|thing|program|"
    r"messages?|notifications?|alerts?|crm|directory|rotation|service)"
)
_ENGLISH = phrases(
    # removing
    rf"{_REMOVE} (?:\w+ )?{_MINE} (?:\w+ ){{0,3}}(?:off|from|out of|outta) (?:of )?(?:\w+ ){{0,4}}{_LIST}",
    r"(?<!crossed that )(?<!crossed it )(?<!checked that )(?<!checked it )(?<!ticked it )(?<!ticked that )(?<!that "
    r"one )"
    r"(?:off|from|out of) (?:of )?(?:your|ur|yalls|the|this|whatever|any) (?:\w+ )?(?:text(?:ing)? |mailing |"
    r"contact |message |marketing )?(?:lists?|database|computer|"
    r"robot|records|contacts|phone ?book|rolodex)",
    r"(?:erase|delete|remove|rmv|rmove|unlist|purge|unenroll|unregister|x|zap) (?:me|us|my number|this "
    r"number)(?: (?:off|out|completely|entirely|for good|from everything))?(?=\Z|[.,!?])",
    r"(?:cross|strike|scratch|take|x|get) (?:me|us) (?:off|out)(?: for good| completely| permanently)?(?=\Z|[.!?])",
    rf"(?:be|being|get|getting) (?:removed|taken off|unsubscribed|deleted|dropped|left off|taken out|off)(?: "
    rf"(?:of|from|the|your|these|this|all|any|getting|receiving)){{1,3}} (?:\w+ )?{_LIST}",
    r"(?:want|need|like|get) (?:you |u |yall |this |these |them )?(?:off|out) (?:of )?my (?:phone|cell|inbox|"
    r"messages|life|face|screen)",
    r"^off (?:the|your|this) list",
    r"(?:im|i am|i want|want|(?<!they )(?<!he )(?<!she )(?<!it )(?<!doctors )(?<!doctor )(?<!hospital )(?<!work "
    r")(?<!boss )let me|get me) out(?: of (?:this|here|these|it))?(?=\Z|[.!])(?<!im out)(?<!i am out)",
    r"un ?sub ?s?c?ri?be?",
    r"(?:please |pls )?(?:rmv|dnc|remv|unsub)(?: me)?(?=\Z|[.,!])",
    r"(?:is|are) off limits",
    r"(?:remove|delete|wipe|erase|scrub|purge|clear|ditch|lose|forget|toss|trash|dump) my (?:\w+ )?(?:number|"
    r"info|information|contact|details|data|digits|cell)(?! (?:is|was|changed))",
    r"no (?:more|further|additional) (?:contact|outreach|communication)",
    r"(?:never|didnt|did not|dont) (?:agree|agreed|ask|asked|sign up|signed up|consent|consented|want|wanted) to "
    r"be (?:on|in|part of|added to|put on)(?: \w+){0,3} (?:list|texts?|group|thread)",
    r"(?:text|contact|messag|bother)\w* (?:me|us|this number|this phone|it|here) again (?:and|or|will|is|ill|"
    r"youll|gets)",
    r"(?:keep|kept|keeps) (?:saying|telling (?:you|u|yall)(?: to)?|texting(?: you)?|replying|writing) (?:to )?stop",
    r"(?:dont|do not|never|not) (?:\w+ )?(?:text|message|contact|call) (?:it|them|her|him|us|here|this (?:phone|"
    r"number|line|cell)) (?:again|anymore|any more|ever)",
    r"(?:phones?|numbers?|line|cell)\b.{0,60}\b(?:remove|delete|erase|drop) (?:it|this|that|mine)(?= please| now| "
    r"thanks|\Z|[.,!])",
    # refusing
    r"(?:dont|do not|never|no longer|didnt) (?:\w+ )?(?:want|need|wish for|like) (?:\w+ )?(?:another|any|one|more|a "
    r"single)(?: \w+)? "
    r"of (?:these|those|them|your texts?)(?! (?:repairs?|services?))",
    rf"(?:no longer|do not|dont|never|not|didnt|nor do i|neither do i) (?:\w+ ){{0,2}}(?:wish|want|care|like|"
    rf"agree|consent|need|desire|wanna) (?:to )?(?:\w+ ){{0,2}}(?:receiv\w*|reciev\w*|get|see|"
    rf"have|hear|accept)(?:ing)? (?:\w+ ){{0,3}}(?:these|those|your texts|from you|from u|from yall|another|"
    rf"{_SENT}){_WORK}",
    rf"(?:prefer|rather|like|appreciate|request|ask|asking|request|want) (?:it if you )?(?:to )?not (?:to "
    rf")?(?:be |get |getting |receive |receiving |hear |hearing |have )?(?:\w+ ){{0,2}}(?:contacted|texted|"
    rf"messaged|bothered|these|from you|{_SENT}|on (?:your|any|the) (?:\w+ )?list){_WORK}",
    r"not (?:to )?be (?:contacted|texted|messaged|bothered|reminded)(?: \w+){0,3}",
    r"not (?:hear|hearing) from (?:you|u|yall)(?: \w+){0,3}",
    r"never (?:\w+ ){0,2}(?:want|need|wish) (?:to )?(?:see|hear|get|read|receive) (?:\w+ ){0,3}(?:these|you|from "
    r"you|another|texts?|messages?)" + _WORK,
    rf"(?:no|any|zero|without) (?:more |further |additional |future |mas |others? )(?:\w+ )?(?:of "
    rf")?{_SENT}(?<!any more things)(?<!more stuff)(?<!any more stuff)",
    r"no (?:more|further|additional) (?:from|of) (?:you|u|these|this|yall|your)",
    r"no (?:mas )?(?:textos|mensajes|texts|msgs)(?=\Z|[.,!]| (?:for me|to me|please|thanks|ever|from you))",
    r"(?<!i )(?<!we )(?:do not|dont|never) (?:ever )?(?:text|message|contact|sms|msg)(?:(?= (?:me |us )?(?:again|"
    r"ever|anymore|any more|back|here|at this))|(?=\Z|[.!,]))",
    r"(?:how about|what if) you (?:dont|stop|quit) (?:text|messag|contact|send)\w*",
    r"(?:i )?(?:did not|didnt|never) (?:ask|sign up|agree|consent|opt in|subscribe)(?: \w+){0,4} (?:texts?|"
    r"messages?|this|these|list)(?= |\Z|[.,!])(?! appointment| service| work)",
    rf"not interested in (?:being|getting|receiving|having) (?:\w+ )?(?:texted|contacted|messaged|bothered|"
    rf"{_SENT}){_WORK}",
    rf"(?:dont|do not|never|no longer|not) (?:\w+ )?(?:want|wish|like|need|asked?|agreed?) to be (?:in|on|part "
    rf"of) (?:your|ur|this|any|the|a) (?:\w+ )?{_LIST}",
    r"(?:want|need|like|have) (?:my|this|our) (?:\w+ )?(?:number|info|information|data|phone|name|contact|"
    r"details) (?:deleted|removed|taken off|erased|off|wiped|out)",
    rf"(?:no|nothing|none|not any|zero) (?:more )?(?:of )?(?:(?:more|it|this|that|these|those|them|from|you|u|yall|"
    rf"your|ur|any|of|"
    rf"stuff|crap|junk|nonsense|ads|whatever|is|{_TEXT}) ){{0,4}}(?:on|to|at) (?:my|this) (?:\w+ )?{_PHONE}"
    r"(?=\Z|[.,!]| please| ever| again| thanks)",
    rf"(?:keep|get|leave|want|need) (?:it|this|that|these|those|them|your \w+|ur \w+|\w+ (?:stuff|crap|junk|nonsense)) "
    rf"(?:\w+ )?off (?:of )?(?:my|this) (?:\w+ )?{_PHONE}",
    # refusing in the English of a learner: `I no want messages more`
    rf"(?:(?:^|[.,!;] ?)(?:please |hi |hello )?|\b(?:i|we|me|please|just) )(?:no|not) (?:want|wants|like|wish|accept|"
    rf"receive) "
    rf"(?:\w+ ){{0,2}}{_TEXT}{_WORK}",
    rf"(?:no|not) send (?:(?:me|us|my phone|more|any|no|please|again|this|these|those|anything|other|another) ?)*"
    rf"(?:{_TEXT}|\Z|[.!,])",
    r"(?:no|not) (?:text|message|write) (?:me |us )?(?:no |any )?(?:more|again|anymore)",
    rf"{_TEXT} (?:no more|not more|finish(?:ed)?)(?=\Z|[.,!]| please| thanks)",
    rf"(?:finish|end) (?:with )?(?:the |this |these |all )*{_TEXT}",
    r"(?:never|didnt|did not|havent|not|nobody|who) (?:\w+ )?(?:gave|give|given|granted|grant|had|have|got) (?:\w+ "
    r"){0,2}(?:permission|consent|"
    r"authorization|the right|the ok|the okay) (?:to|for) (?:\w+ )?(?:text|message|contact|bother|spam|write|texts|"
    r"messages|use my)\w*",
    r"(?:you|u|yall|this number|this|yourselves|yourself|number) (?:are |is |r |will be |to be |as )?(?:re |ll "
    r")?(?:now |getting |being |"
    r"officially |about to be |going to be |gonna be )*blocked(?! (?:the|my|in|off|by|me|a|with|up)\b)",
    r"(?:youre|your|ur|im|i am|ill be|were) (?:getting |being |now |so |about to be )*(?:blocked|blocking (?:you|u|"
    r"yall|this|ya))"
    r"(?=\Z|[.,!]| from| if| next| now)",
    rf"not (?:another|one more|a single|one|1 more) (?:\w+ )?{_TEXT}(?! (?:until|till|about|yet|came|back))",
    rf"(?:like|love|want|wish|need|ready|prefer|asking|trying) (?:\w+ )?(?:to )?(?:stop|quit|cease|be done) (?:with "
    rf")?(?:getting|receiving|seeing|"
    rf"hearing) (?:\w+ ){{0,2}}(?:these|those|this|them|from you|anything|{_TEXT})",
    r"^(?:\W|please |just |i |we |id |like |want |need |get |me |us )*(?:want|like|get me|get us|let me) off(?: "
    r"please| now| already| of this| "
    r"this)?\W*$",
    r"^(?:\W|please |just |go |you |can |all |oh |ok |hey )*(?:take a hike|kick rocks|beat it|scram|pound sand|go "
    r"pound sand|buzz off|bug off|"
    r"hit the road|get out of here with (?:this|that)|kiss off|shove it|get a life|drop dead)\b[^?]{0,20}$",
    # ceasing
    rf"(?:please |kindly |just )?{_CEASE} (?:\w+ ){{0,3}}(?:texts|messages|msgs|messaging|texting|sms|reminders|"
    rf"notifications|alerts|spam|communications?|correspondence|outreach)",
    r"(?:stop|stahp|stawp|staph|quit|cease) (?:text|messag|contact|send|bother|bug|spam|harass|remind|ping|blow|"
    r"annoy|pester|writ|hit)\w*",
    rf"{_OFF} (?:all |the |these |those |your |my )*{_SENT} off",
    rf"{_OFF} off (?:all |the |these |those |your |my )*{_SENT}",
    rf"(?:{_SENT}|these|those)\b.{{0,60}}\b{_OFF} (?:them|it|these|those) off",
    r"(?:please |kindly )(?:discontinue|cease|desist|refrain|terminate|unsubscribe)(?: (?:this|these|it|"
    r"all))?(?=\Z|[.,!])",
    rf"(?:(?:this|that|it|yours|these) (?:to |had better |needs to |has to |must |should |better |can |"
    rf"will )(?:please )?be|"
    rf"(?:let|make|making|consider) (?:this|that|it)(?: be| one)?|(?:this|that) (?:is|was) (?:going to |gonna )?be) "
    rf"(?:the |your |my )?(?:very )?(?:last|final) (?:{_TEXT}|one|contact|time)(?! (?:i|we) (?:come|bring|visit|ask|"
    rf"do|tell))"
    rf"(?! (?:visit|appointment|oil|service|repair))(?=\Z|[.,!]| (?:that )?(?:i|we|you|u|yall|from|to|ever|of)\b)",
    r"(?:the )?last (?:text|message) i (?:want|ever want|expect|better)(?: \w+){0,4}",
    r"(?:blocking|block) (?:you|u|yall|this|ur) (?:\w+ ){0,2}(?:now|number|unless|if|today|next|guys)?",
    r"(?<!to )(?<!cant )(?<!wont )(?<!didnt )(?<!doesnt )(?:quit|stop|cut) (?:it|this|that)(?: out)?(?: now| "
    r"already| please)?\Z",
    r"leave my (?:phone|number|line|cell|inbox) (?:alone|in peace|be)",
    r"(?:texts?|messages?|reminders?) (?:are|is) (?:unwanted|not (?:wanted|welcome|needed)|unwelcome|unsolicited|"
    r"harassment)",
    r"(?:said|told you(?: guys)?) no more(?! than)",
    r"(?<!to )(?<!cant )(?<!wont )(?<!didnt )(?<!doesnt )(?<!not )(?:quit|stop|knock|cut) it (?:or|before|off|"
    r"right now|immediately)",
    r"(?:be|get) (?:removed|taken off|unsubscribed|deleted|opted out)(?=\Z|[.,!?]| (?:this|please|now|asap|pls|"
    r"from (?:this|these|it|your)))",
    r"(?:dont|do not) use (?:it|this|my (?:number|phone|cell)) for",
    r"(?:(?<=^)|(?<=[.,!?] )|(?<=please )|(?<=just )|(?<=to you )|(?<=can you )|(?<=more )|(?<=so ))(?:stop|end|"
    r"quit|cease) (?:these|those|them|this|sending)(?=\Z|[.,!?]| please| now| already| immediately)",
    r"(?:end|stop|cancel|kill) (?:this|my|the|your) (?:subscription|text service|messaging|mailings?)",
    r"never (?:\w+ ){0,2}(?:want|need|wish|care) (?:to )?(?:see|hear|get|read) (?:\w+ ){0,3}from (?:you|this|"
    r"yall|your|ur)",
    r"(?:dont|do not|no need to) (?:ever )?bother (?:text|messag|writ|contact|remind)\w+(?: me)?(?: again| anymore| "
    r"any more|(?=\Z|[.!]))",
    # being left alone
    r"(?:leave|let) (?:me|us) (?:alone|be|the \w+ alone|in peace)(?! able)",
    r"(?:^|[.,!?] |go |please |just )(?:bother|bug|text|annoy|pester|harass|spam|message|blow up|"
    r"light up|go (?:bother|bug|text)|try) (?:some ?(?:one|body)|any ?(?:one|body)|other people)s?(?:s| elses?)(?: "
    r"\w+)?",
    r"(?:^|[.,!?] ?)(?:please |just |so )?go away",
    r"(?:honor|respect|comply with) my (?:request|wishes|opt ?out)",
    r"so should i(?: be)?\b.{0,20}\blist",
)
_ENVIADO = (
    r"(?:mensaj\w*|textos?|msgs?|sms|recordatorios?|(?<!le )(?<!les )(?<!yo )(?<!te )avisos?|notificaciones|"
    r"publicidad|propaganda|promociones|"
    r"spam|alertas?|anuncios?|campanas?|cosas(?! (?:de|del|que|personales))|correos)"
)
_ENVIAR = (
    r"(?:mand|envi|escrib|text|tecst|contact|molest|busqu|busc|insist|fastidi|chin[gu]|fre[gu]|jod|acos|lleg|yeg|"
    r"notific|record|recuerd|avis)"
)
_MIO = r"(?:mi|este|mis|ese|el) (?:\w+ )?(?:numero|telefono|tel|cel|celular|contacto|datos|nombre|informacion|linea)"
_SPANISH = phrases(
    rf"(?:qui[tc]|saqu|sak|sac|borr|elimin|remuev|remov|retir|tach|baj|suprim|dej|desinscrib|desapunt)\w*me "
    rf"(?:\w+ ){{0,3}}(?:de|del|fuera)(?: de)? (?:\w+ ){{0,3}}(?:listas?|base|sistema|registros?|"
    rf"campanas?|grupo|clientes|contactos|text|{_ENVIADO})",
    rf"(?!\w*(?:aron|aste|ado) )(?:qui[tc]|saqu|sac|borr|elimin|remuev|remov|retir|tach|suprim|olvid|limpi)\w* "
    rf"(?:\w+ ){{0,2}}{_MIO}(?! (?:de|del|en) (?:la agenda|ese|la cita|el horario|manana|la lista de espera))",
    r"(?:que )?(?:ya )?me (?:borren|quiten|saquen|eliminen|den de baja|tachen)(?= |\Z|[.,!])(?! (?:la|el|los|las|"
    r"de la agenda|de manana))",
    r"(?:quitar|sacar|borrar|eliminar|remover)(?:me)? de (?:la|su|esta|sus|esa) (?:\w+ )?(?:listas?|base|sistema|"
    r"registros?|mensajes)(?! de espera)",
    rf"(?:hart[oa]s?|cansad[oa]s?|fastidiad[oa]s?|hasta el gorro|hasta la madre) de (?:sus|los|tantos?|estos|"
    rf"esos|que me) (?:{_ENVIADO}|{_ENVIAR}\w+)",
    rf"(?:delete|borron|remove|block) (?:a|al|de|en) {_MIO}",
    r"des(?:us|in)cri\w*",
    rf"(?:den|de|dar|dando|deme|dame) de baja (?:a |de )?(?:{_MIO}|(?:este|mi))",
    r"fuera de (?:mi (?:cel|celular|telefono|vida|numero)|su lista)",
    rf"(?:ya )?no (?:(?!preocup)\w+ ){{0,2}}(?:vuelvan?|vuelvas|sigan?|sigas|anden?|esten|estes|este(?= \w+ndo)) "
    rf"(?:a |de )?{_ENVIAR}\w*",
    rf"(?:no|nunca|tampoco|sin) (?:\w+ ){{0,3}}que (?:ya )?(?:no )?me (?:\w+ )?{_ENVIAR}\w+",
    rf"que (?:ya )?no (?:me |nos |le )?(?:\w+ )?{_ENVIAR}(?:e|a|en|an|ue|uen)(?: \w+)?(?= |\Z|[.,!])",
    rf"no (?:se )?(?:me )?{_ENVIAR}(?:e|a|en|an|ue|uen) (?:\w+ ){{0,4}}(?:mas|nunca|jamas)(?= |\Z|[.,!])",
    rf"(?:no|ni|ya no|tampoco) (?:\w+ )?(?:quier\w+|kier\w+|dese\w+|necesit\w+|acept\w+|autoriz\w+|me interesa|"
    rf"pedi|solicite) (?:\w+ ){{0,4}}{_ENVIADO}",
    r"no (?:quiero|deseo|me interesa) (?:ser|estar|seguir|aparecer) (?:\w+ ){0,4}(?:lista|base|datos|clientes|"
    r"sistema|grupo)",
    rf"(?:par\w+|dej\w+|ces\w+|termin\w+|suspend\w+|evit\w+|favor) (?:ya )?de (?:no )?(?:\w+ )?{_ENVIAR}\w*(?! y llam)",
    rf"(?:par\w*|bast\w*|ya estuvo|ya) (?:\w+ ){{0,2}}con (?:los|tanto|tantos|sus|esos|estos|tus) {_ENVIADO}",
    rf"(?:suspend|desactiv|apag|ces|cort|termin|anul|inhabilit|cancel|deten|quit|paren|parar|pare)\w* (?:\w+ "
    rf"){{0,3}}(?:{_ENVIADO}|(?:eso|lo) que me mand\w+)",
    r"(?:suspend|desactiv|cancel)(?:an|en|a|e)lo(?=\Z|[.,!])",
    rf"(?:pon|den|dar|pong)\w* fin a (?:\w+ )?{_ENVIADO}",
    r"(?:nunca|no|jamas) (?:les |le )?(?:di|he dado|doy|dimos|autorice|autorizo|autorizamos|acepte) (?:\w+ "
    r")?(?:permiso|autorizacion|consentimiento|que|a que)",
    r"(?:los|las|les|te|lo|la) (?:voy a |vamos a |estoy )bloque\w+",
    rf"(?:ni un|cero|sin|nada de|no mas|ningun) (?:\w+ )?{_ENVIADO}(?: mas)?(?! (?:de la|del|sobre|de que))",
    r"(?:dej\w+|dejar)(?:me|nos)? (?:ya )?en paz",
    r"(?:ya )?no (?:\w+ )?insist\w+",
    rf"(?:ya )?no (?:me |nos |le |mas )?(?:mand|envi|escrib|pas|remit)(?:e|en|es|an|as|ar|ir) (?:mas )?(?:\w+ "
    rf")?{_ENVIADO}",
    r"(?:no|ya no) (?:quiero|deseo|necesito|acepto) (?:\w+ )?(?:ni )?un[oa] mas",
    r"(?:no|ya no) (?:quiero|deseo) (?:\w+ )?(?:recibir|seguir recibiendo|que me lleguen?) (?:\w+ ){0,2}(?:mas|uno|"
    r"nada|estos?|eso)",
    r"(?:me )?bloque\w+ de (?:su|la|esa) lista",
    rf"no (?:\w+ )?recibir (?:\w+ ){{0,3}}{_ENVIADO}",
)
_RESUMES = phrases(
    r"(?:opted out|unsubscribed|stopped(?: it| them)?|blocked|texted stop|said stop|hit stop|sent stop)(?: "
    r"\w+){0,4} (?:by|on) (?:accident|mistake|error)",
    r"(?:(?:wasnt|was not) (?:supposed|meant) to|didnt mean to|did not mean to|accidentally|mistakenly) (?:opt "
    r"out|unsubscribe|stop|block|send|text|say|hit)\w*",
    r"(?<!dont )(?<!never )(?<!not )(?<!didnt )(?:sign|put|add|get|opt|let|include) me (?:back )?(?:up again|"
    r"back|in again|on again|up once)(?: \w+)?",
    r"reinstate(?: \w+)?",
    r"re ?(?:activat|enroll|subscrib|join|start|sum)\w*",
    r"un ?(?:cancel|stop|block)(?:ed|led)?",
    r"start (?:them|it|the texts?|those|these|texting|sending|messaging|the messages)(?: \w+)?(?: up)?",
    r"(?:regret|forgive|ignore|disregard|undo|take back|sorry about|cancel) (?:the|my|that) (?:\w+ )?(?:stop|"
    r"unsubscribe|opt ?out)",
    r"(?:my|i give|giving|give you|gave) (?:\w+ )?consent to be (?:contacted|texted)",
    r"keep me on",
    r"(?:can|ok to|may|please|free to|go ahead and|let you) (?!dont |not |never |do |stop )(?:\w+ )?(?:send|text|"
    r"message|remind|contact)\w* (?:me )?(?:\w+ ){0,3}again",
    r"(?:vuelv|regres)\w*(?:me)? a (?:poner|meter|anotar|incluir|agregar|apuntar)\w*",
    r"turn(?:ed)? (?:\w+ )?back on",
    r"(?:want|like) (?:the|your|those|my) (?:texts?|messages?|reminders?) (?:back|again)",
    r"(?:texts|messages|reminders) (?:back|again) (?:please|on)",
    r"(?:inscrib|anot|apunt|met|pong|agreg)\w* de (?:vuelta|nuevo)",
    r"(?:pero|but) (?:ahora|now|hoy|today) (?:ya |si |i |yo )*(?:los |las |me )?(?:quiero|want|need|necesito|gustaria|"
    r"would like|interesan)"
    r"(?: \w+)*",
    r"autorizo (?:de nuevo|otra vez|nuevamente)",
    r"(?<!no )(?<!no me )(?<!que )sigan? (?:escrib|mand|envi|text)\w*",
    r"(?<!no )(?<!no me )vuelvan? a (?:mand|escrib|envi|text)\w+(?= (?:por favor|los|mis|porfa|gracias)|"
    r"\Z)(?<!no me vuelvan a mandar)",
    r"(?:restart|reactiv|reanud|reinici)\w*",
)
_RETAINS = re.compile(r"\b(?:no|ni|tampoco|nunca|jamas|never|dont|do not|not)\b[^.]{0,14}$")
_ASKS_HOW = re.compile(
    r"\b(?:how(?!ev| many| often| come| about| dare| rude| hard| else)|howd|hows|is there (?:a|any) (?:way|"
    r"number|word|link|option)|any way|what (?:do|can|should|would) (?:i|you|we|one) "
    r"(?:\w+ )?(?:text|send|say|type|press|write|do|reply)|what is the (?:\w+ )?(?:way|word|keyword)|which word|"
    r"como (?:le |me |se |puedo |podria |hago|apag|suspend|cancel|par[oa]|det|quit|salg|dej|doy|borr|desact|dar|"
    r"elimin|hacer)|"
    r"cual es la (?:forma|manera|palabra)|hay (?:forma|manera|modo)|"
    r"que (?:pongo|escribo|tengo que|hago|mando|le hago)|se puede|es posible|where do i (?:go|click|sign))[^.!?,\n]*"
)
"""A question how to stop is `help`: what it holds is no stop."""
_FOR_NOW = phrases(
    r"(?:(?:take|pull|drop|get|remove|delete|strike|scratch|cross|kick|leave) (?:me|us|it|my name|my car) )?"
    r"(?:off|from|out) (?:of )?(?:the |your |ur )?(?:(?:todays?|tomorrows?|(?:mon|tues|wednes|thurs|fri|satur|"
    r"sun)days?|"
    r"this \w+|morning|afternoon) (?:\w+ )?(?:list|page|slot|schedule)|(?:\w+days? |tomorrows? |todays? "
    r")?(?:schedule|calendar|"
    r"books?|board|line ?up|roster|docket|slate))(?: for (?:\w+day|today|tomorrow|the \d+))?",
    r"(?:off|out|me|name) (?:for |from |of |on |de )?(?:for )?(?:this (?:one|time|round|visit|month|week)|now|"
    r"todays?|tomorrows?|tonight|(?:mon|tues|wednes|thurs|fri|satur|sun)days?|"
    r"(?:the |your |ur |that |ese |el )?(?:schedule|calendar|books?|appointment|slot|horario|agenda|cita|"
    r"waiting list|wait ?list|hold|shuttle|lista de espera))(?: \w+)?",
    r"(?:appointment|booking|visit|slot|reservation) (?:\w+ ){0,3}(?:be |been )?(?:deleted|removed|taken off)",
    r"(?:my name |me |us )(?:\w+ ){0,3}off (?:\w+ ){0,3}for (?:the )?\d+",
    r"(?:borr|quit|saqu|elimin|tach|cancel)\w*me (?:\w+ )?(?:del|de la|de|para|de las) (?:dia|manana|hoy|lunes|"
    r"martes|miercoles|jueves|viernes|sabado|agenda|cita|horario|\d)(?: \w+){0,3}",
    r"(?:borr|quit|saqu|saca|elimin|tach|baj|cancel)\w* (?:mi nombre |me )?(?:del?|de la) (?:lista|agenda|horario|"
    r"calendario) "
    r"(?:del?|para) (?:el |la )?(?:dia|manana|hoy|lunes|martes|miercoles|jueves|viernes|sabado|semana|\d+)",
)
"""A booking or this one time is called off, not the texts."""
_NAME = phrases(
    r"(?:pull|scratch|drop|remove|delete|take|nix|scrap|qui\w+|borr\w+|saqu\w+) (?:my name|mi nombre)(?: off| "
    r"out)?(?=\Z|[.,!]| (?:de|del|from) (?:ese|esa|la|el|the|that) (?:\w+ ?)$)"
)
_OFF_THE_BOOKS = re.compile(
    r"\b(?:(?<=you can )|(?<=so )|(?<=just )|(?<=go ahead and )|(?<=may as well )|(?<=pueden ))"
    r"(?:take (?:me|us|it|her|him) off|quitarme|borrarme|sacarme)(?=\Z|[.,!])"
)
_OF_TEXTS = re.compile(r"\b(?:text\w*|messag\w*|number|list|sms|spam|remind\w*|mensajes?|textos?|lista|numero)\b")
"""Beside a booking and no word of texts, the booking is what one is taken off."""
_WARNING = re.compile(r"\bstop (?:engine|vehicle|the (?:car|vehicle|engine)|lamp|light|sign|safely|warning)\b")
"""What a dashboard says."""
_ONE_BY_ONE = re.compile(r"\b(\w+)\. (?=\w+\.)")


_STOPPING = re.compile(
    r"\b(?:stop\w*|quit\w*|unsub\w*|opt\w*|(?:turn|shut|switch|get|take|be)\b.*\boff|cancel\w* (?:the|these|"
    r"those|los|estos|texts?)|end (?:the|these|this)|remove\w*|no (?:longer|more)|"
    r"not (?:get|receive|be)|(?:ya )?no (?:me |quiero |recibir|mas)|parar\w*|dejar de|quitar\w*|salir\w*|dar\w* "
    r"de baja|baja|cancelo|paro|detengo|borrar\w*|desactiv\w*|block)\b"
)


def takes_back(text: str) -> bool:
    """Whether the words, free of what is harmless, take the consent back."""
    return bool(_ENGLISH.search(text) or _SPANISH.search(text))


def without_other_uses(text: str, has_booking: bool) -> str:
    """The text without questions how to stop, warnings of a dashboard, and words that call off a booking."""
    plain = _WARNING.sub(" ; ", _ONE_BY_ONE.sub(r"\1 ", text))
    plain = _FOR_NOW.sub(" ; ", _ASKS_HOW.sub(" ; ", plain))
    if not has_booking:
        return plain
    return _NAME.sub(" ; ", plain if _OF_TEXTS.search(plain) else _OFF_THE_BOOKS.sub(" ; ", plain))


def has_other_uses(text: str, has_booking: bool) -> bool:
    """Whether words of a stop stand in it that are none: then a likeness to one is no ground to say it."""
    return without_other_uses(text, has_booking) != _ONE_BY_ONE.sub(r"\1 ", text) or bool(_CROSSED_OFF.search(text))


_CROSSED_OFF = re.compile(
    r"\b(?:crossed|checked|ticked|knocked|got|tache|palome\w*) (?:it|that|this|one|them|eso|lo) off\b|\b(?:share|"
    r"sharing|comparto|le paso) (?:mi|my) (?:contact\w*|numero)\b"
)


def asks_how_to_stop(text: str) -> bool:
    """Whether it asks how to stop the texts."""
    return any(_STOPPING.search(match.group()) for match in _ASKS_HOW.finditer(text))


def gives_back(text: str) -> bool:
    """Whether the consent is given again: a stop beside it is the one that it takes back."""
    return any(not _RETAINS.search(text[: match.start()]) for match in _RESUMES.finditer(text))
