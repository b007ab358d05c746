"""`later`: not now, ask me again later; from when on is read in `until.py`."""

from __future__ import annotations

import re

from followup.core.replies.not_later import NOT_LATER
from followup.core.replies.said import Said, phrases, whole

CODE = "later"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "not now", "maybe later", "ill call you when im ready", "not right now, busy", "after payday",
        "ask me again in june", "cant right now", "money is tight", "not this month", "lemme think about it",
        "gotta talk to my wife", "waiting on my tax refund", "when i get paid", "maybe next month",
        "i'll let u know", "im out of town", "have to check my schedule", "not yet", "kinda busy these days",
        "when things slow down", "hit me up in may", "after the baby comes", "need to save up first",
        "cant afford it at the moment", "will get back to u", "ill reach out when i need it", "gotta ask the hubby",
        "just had surgery, give me a month", "try me next week", "maybe in a bit", "ill call to schedule",
        "not right this second", "let me check with my husband", "I'll think on it", "once i get my tax return",
        "after the first of the month", "remind me in a month", "i'll be in touch", "check back later",
        "too much going on right now", "not sure yet", "on vacation", "after my vacation", "cant at the moment",
        "need a couple weeks", "i get paid on the 15th", "let me see what my week looks like",
        "will schedule later", "hold off for now", "ask me in the spring", "dont have time this week",
        "busy season at work, later", "after graduation maybe", "let me wait til i get my raise",
        "i'll swing by when i have time", "not a good time", "ask me again in a bit", "im in the hospital",
        "dealing with a family thing right now", "i'm between checks", "when school lets out",
        "ill schedule when im back in town", "saving for a trip first", "need to hold off", "im overseas",
        "my schedule is insane", "i need to budget for it", "once baseball season is over",
    ),
    "es": (
        "ahorita no", "mas adelante", "cuando me paguen", "yo les aviso", "al rato", "dejeme ver con mi esposa",
        "ahora no puedo", "no tengo dinero orita", "el otro mes", "lo voy a pensar", "luego les hablo",
        "ando fuera de la ciudad", "por ahora no", "hasta la quincena", "estoy corto de dinero",
        "deje checo mi horario", "otro dia sera", "cuando regrese de mexico", "escribame en mayo", "todavia no",
        "ando bien ocupado", "despues les digo", "cuando tenga chance", "no traigo feria", "ya les dire",
        "pasando las fiestas", "deje junto dinero", "tal vez despues", "ahorita no tengo tiempo", "despues",
        "ahora estoy trabajando", "cuando cobre", "yo le hablo", "la otra semana le digo", "lo pensare",
        "no por ahora", "estoy de vacaciones", "el mes que entra", "en unos dias le confirmo", "dejeme checar",
        "mas tarde le aviso", "ahora no tengo dinero", "hasta que me paguen", "recuerdeme en un mes", "ando fuera",
        "estoy en el hospital", "tengo mucho trabajo", "cuando termine la escuela", "ya que pase el frio",
        "deje me organizo", "estoy juntando", "no es buen momento", "despues de mis vacaciones",
        "ahorita andamos apretados", "al rato le aviso", "yo creo que el otro mes", "estoy de luto, despues",
    ),
}  # fmt: skip

_SAYS = phrases(
    r"(?:were|we are|im|i am|well be|ill be|we will be|i will be) (?:gone|away|out|abroad|traveling) (?:til+|"
    r"until|through|thru)(?: \w+){0,3}",
    r"(?:nudge|poke|bug|buzz) me(?=\W*$| (?:\w+ ){0,3}(?:in|next|when|after|later|again|around|come|once|about|on|"
    r"closer)\b)(?<!buzz me)",
    r"buzz me (?:\w+ ){0,3}(?:in|next|when|after|later|again|around|come|once|closer)\b(?: \w+){0,3}",
    r"(?:hang|hold) on(?: \w+){0,4} (?:planner|calendar|schedule)",
    r"(?:finish|done) paying off(?: \w+){0,4}",
    r"let me (?:tell|text) you (?:tonight|tomorrow|later|soon)",
    r"no idea yet",
    r"not a good time",
    r"between (?:checks|paychecks|jobs)",
    r"(?:when|once|after) (?:school|the kids|baseball|football|soccer|hockey|basketball|the season|summer|"
    r"winter|tax)(?: \w+){0,3}(?: (?:lets out|starts|ends|over|is over|done|is done|season))?",
    r"saving (?:up )?(?:for|money)(?: \w+){0,3}",
    r"(?:need|have|got) to (?:budget|save|plan)(?: \w+){0,3}",
    r"cant commit(?: \w+){0,3}",
    r"(?:in the )?middle of (?:moving|a move|\w+ing)(?: \w+)?",
    r"too (?:much|many) (?:\w+ )?(?:going on|on my plate|to do|stuff)(?: \w+){0,3}",
    r"on vacation",
    r"need (?:a )?(?:couple|few|some|another|\d+|two|three)(?: more)? (?:weeks?|days?|months?)",
    r"let me see(?: \w+){0,8}",
    r"(?:at|im at) work(?: right)? now",
    r"(?:have|has|got|going|gonna) to wait(?! (?:there|here|in|for (?:it|the|my)|on it|while|at))",
    r"let me (?:get|finish|make it|just get) (?:through|past|over|done|back|my)(?: \w+){0,4}",
    r"cant (?:swing|manage|spare|handle|afford) (?:it|that|this)?(?: \w+){0,3}",
    r"(?:lost|losing|between|laid off|out of) (?:my )?(?:jobs?|work)",
    r"see what (?:my |the )?(?:insurance|wife|husband|boss|budget|bank|warranty)(?: \w+)*",
    r"(?:parked|car is|its) at the airport",
    r"not at this time",
    r"cant (?:right )?now",
    r"(?:gotta|got to|have to|need to|let me|must|should|going to) (?:\w+ )?(?:ask|talk to|check with|run "
    r"it by|see what|discuss with|consult) (?:\w+ )?(?:the |my )?(?:wife|husband|hubby|boss|spouse|"
    r"partner|mom|dad|parents|family|budget|schedule|calendar|work|wifey|boyfriend|girlfriend|roommate)",
    r"(?:waiting|wait) (?:on|for|until|till) (?:\w+ ){0,3}(?:refund|taxes|tax|check|paycheck|pay|money|"
    r"insurance|bonus|settlement|payday|unemployment|deposit|loan)",
    r"in (?:a )?(?:few|couple)(?: of)? (?:weeks|days|months)(?=\Z|[.,!]| maybe| or so)(?<!come in a few "
    r"weeks)",
    r"(?:give|gimme) me (?:a|another|a few|\d+|some|couple|one|two|more) (?:\w+ )?(?:month|week|weeks|"
    r"months|day|days|time|bit|while)",
    r"(?:just |recently )?(?:had|having|recovering from) (?:\w+ )?(?:surgery|a baby|operation)",
    r"(?:cant|not able to|unable to) drive (?:for|until|till|right now|at the moment|yet|these)",
    r"(?:look|check|see) (?:at |on )?(?:it |the car |my schedule |my calendar )?(?:tonight|later|when i "
    r"get|tomorrow|after work)",
    r"not near (?:the|my) (?:car|truck|van)",
    r"swamped",
    r"slammed",
    r"saving up",
    r"(?:look at|check) my (?:calendar|schedule|planner|bank)",
    r"(?:after|when|once) (?:i|we) (?:get|got|recieve|receive|have) (?:my |our |the |some )?(?:bonus|"
    r"refund|money|paid|check|tax\w*|raise|job|settlement|cash)",
    r"(?:get|be) back (?:to|with) (?:you|u|yall)",
    r"(?:holding|hold) off",
    r"not (?:this|at this|at the) (?:month|week|time|moment|year|season)",
    r"(?:reach out|text you|message you|let you know|contact you|hit you up|call you|be in touch|come by) "
    r"(?:when|once|if|later|after|soon|as soon)",
    r"ill (?:let you know|reach out|be in touch|contact you|hit you up|text you|message you)",
    r"another time",
    r"some other time",
    r"(?:this|the) (?:week|month) is (?:bad|crazy|nuts|packed|full|no good)",
    r"not (?:right |just )?(?:now|yet|at this time|at the moment|today|this (?:week|month|time|"
    r"year)|quite yet|ready|at this moment|currently)",
    r"no(?:,)? not yet",
    r"(?:maybe|perhaps|possibly|some|probably|try|talk|do it|ask(?: me)?|remind me|catch you|"
    r"hit me up|another time|text me|message me|get back) (?:\w+ )?(?:later|another time|"
    r"some ?time|down the road|another day|in the future)",
    r"later (?:on|maybe|please|this (?:year|month)|down|in the year)",
    r"(?:some|another|any) other time",
    r"another time",
    r"in a (?:bit|while|little while)",
    r"(?:ill|i will|i can|we will|well|let me|i need to|need to|i have to|have to|gotta|gonna|"
    r"going to|lemme|ima|i must|should) (?:\w+ )?(?:call|text|let|get back|think|check|see|talk|"
    r"look at|look|reach|contact|ask|decide|figure|save|wait|hold off|know|confirm|circle|"
    r"find out|consult|get with|ring|give you|message|hit you|be in touch|schedule (?:it )?later|"
    r"shop around|touch base|follow up|pass for now)(?: (?:you|u|yall|it|about|me|my|with|back|on|"
    r"at|and|to|off|the|out|over|up|in)\b|\Z|[.,])",
    r"give (?:me|us) (?:a (?:few )?(?:day|week|month|minute|bit|second|while|some)s?|some time|"
    r"time|until|till|\d+ (?:days|weeks|months))",
    r"let you know",
    r"get back (?:to|with) you",
    r"hold off",
    r"wait (?:a (?:bit|while|little)|until|till|for|on)",
    r"(?:ask|remind|text|message|contact|hit|reach|ping|bug|circle|follow|touch base|"
    r"call)(?: me| us| back| with me| in| out| up| again| to me)* (?:\w+ )?(?:later|again|next|in|"
    r"after|around|closer|sometime|some other|another|when)(?! (?:if|the morning\Z))",
    r"check(?: back| in with| with me| with us| again)+ (?:\w+ )?(?:later|again|next|in|after|around|closer|"
    r"some\w*|when)",
    r"try (?:me |us |back )*(?:again )?(?:\w+ )?(?:later|next|in (?:a|an|the (?:spring|summer|fall|winter)|\d+|"
    r"two|three|"
    r"few|couple)|after|closer|some ?time|some other|another|when)\b",
    r"try (?:me |us |back )*again\Z",
    r"check back",
    r"check with me",
    r"(?:when|once|after|as soon as) (?:i|we|my|they|the|i'm|im|it|ive|things|money|funds|"
    r"payday) (?:\w+ ){0,3}(?:get|gets|paid|have|has|can|settle|settles|slow|slows|get paid|"
    r"afford|done|back|return|finish|hits|reaches|ready|budget|money|closer|allows?|improves?|"
    r"comes?|refund|taxes?|job)\w*",
    r"pay ?day",
    r"(?:next|my|the) (?:pay ?check|paycheck|pay)",
    r"get paid",
    r"(?:too|really|super|very|so|kinda|pretty|im|been|crazy|swamped|"
    r"slammed) busy(?: (?:right )?now| this)?",
    r"busy right now",
    r"(?:dont have (?:the )?(?:time|money|funds|cash)|no (?:time|money|funds|cash)|money is tight|"
    r"tight on money|short on (?:cash|money)|(?<!you )(?<!they )broke(?! (?:my|the|a|our|off|"
    r"down)\b))(?: right| at the| now| this)?(?: now| moment|"
    r" month| week| till| until)?",
    r"(?:cant|can not) (?:afford|do) (?:it|that|this)? ?(?:right now|now|yet|at the moment|"
    r"this (?:week|month))",
    r"(?:im|we are|were|currently|i am|is) (?:\w+ )?(?:out of (?:town|state|the country)|away|"
    r"traveling|travelling|on vacation|deployed|overseas|in the hospital)",
    r"for now",
    r"down the (?:road|line)",
    r"closer to(?! (?:home|me|us|my (?:house|place|home|work|job)|the house|work)\b)",
    r"(?:need|want) (?:some |more |a little )?(?:time|to think|to (?:wait|hold|save|check))",
    r"thinking about it",
    r"(?:have|need) to (?:think|check|ask|talk|save|look|wait|see)",
    r"not until",
    r"(?:it|car|that|she|brakes|tires) can wait(?!\?)",
    r"can (?:it|this|we) wait (?:until|till|a|for)",
    r"still thinking",
    r"(?:idk|dont know|not sure|unsure)(?: (?:yet|when|right now|my schedule|what day))?",
    r"soon\Z",
    r"eventually",
    r"remind me",
    r"ask (?:me )?again",
    r"in (?:a )?(?:few|couple) (?:of )?(?:months|years)",
    r"(?<!st of )(?<!nd of )(?<!rd of )(?<!th of )next (?:month|year|season|time)",
    r"at (?:\d+ ?k|\d\d,?\d{3})",
    r"(?:at|around|hits?|reach(?:es)?|til|till|until|when it gets to) (?:\d{2,3} ?k|"
    r"\d{2,3},? ?\d{3}|\d{2,3} ?thousand)(?: (?:miles|mi|km))?",
    r"snowed under",
    r"after (?:my|our|the) (?:\w+ )?(?:vacation|trip|surgery|move|wedding|baby|exams?|finals|"
    r"season|school year|operation)",
    r"(?:when|once) (?:it is|its|the weather is|weather is|it gets|things are|"
    r"work is) (?:\w+ )?(?:warmer|nicer|cooler|over|better|slower|calmer|warm)",
    r"bad time",
    r"i ?ll pass for now",
    r"on the fence",
    r"^(?:(?:im|i am|ill be|we are|we|i|be|get|wont be) )*(?:back|home) from (?:\w+ ){1,3}(?:on )?(?:january|"
    r"february|march|april|may|june|"
    r"july|august|september|october|november|december|the) \d+(?: ?(?:st|nd|rd|th))?\Z",
    r"come (?:the )?(?:spring|summer|fall|autumn|winter)",
)
_DICE = phrases(
    r"(?:cuando|en cuanto|ya que|apenas|hasta que|nomas que) (?:me |nos |se |ya |le )*(?:deposit|empie|empez|acab|baje|"
    r"mejor|recuper|nazca|desocup|alivi|saqu|junt|componga|cai|llegue el (?:pago|cheque))\w*(?! (?:de|el|mi) "
    r"(?:trabaj|jale|turno)\w*)",
    r"d(?:a|e|en)me (?:\w+ )?(?:chance|tiempo|unos? \w+|un par de) (?:\w+ )?(?:mes|meses|semanas?|dias)",
    r"mas adelant\w+",
    r"(?:mas tarde|luego|despues) en el ano",
    r"(?:wait|hasta|pa|para|en) (?:\w+ )?(?:finales|fines|mediados|principios) de(?:l)? (?:otono|verano|invierno|"
    r"primavera|ano)",
    r"deja(?:me|nme)? (?:primero )?(?:cobr|me pag|me alivi|me recup)\w+",
    r"(?:pregunt|record|escrib|busqu|busc|recuerd|acuerd|text|mand|avis)\w*(?:nme|me|eme) (?:\w+ ){0,3}(?:en|el|la|"
    r"despues|luego|cuando|para|dentro|hasta|pasando|entonces|ese (?:mismo )?dia|esa semana|manana)\b(?! (?:direccion|"
    r"ubicacion|cotizacion|precio|numero|foto\w*|cuenta|factura|hora))",
    r"me (?:busc|escrib|avis|pregunt|recuerd|text|mand|contact)\w+ (?:\w+ ){0,2}(?:en|el|para|cuando|entonces|dentro|"
    r"hasta|despues|luego)\b",
    r"hasta (?:entonces|ese dia|esa fecha) (?:\w+ )?no",
    r"(?:me|nos) (?:pagan|depositan) (?:hasta )?(?:el|en|la|manana|este|los)",
    r"cobro (?:hasta )?(?:el|en|la|manana|este|los)",
    r"tengo (?:\w+ )?mucho (?:trabajo|que hacer|jale)",
    r"ya que (?:pase|acabe|termine|cobre|pague)(?: \w+){0,3}",
    r"deje(?:me)? (?:me )?(?:organizo|acomodo|arreglo|desocupo)",
    r"(?:estoy|ando) (?:juntando|ahorrando)(?: \w+)?",
    r"no es (?:un )?buen momento",
    r"(?:andamos|ando|estamos|estoy) (?:\w+ )?(?:apretad[oa]s?|gastad[oa]s?|quebrad[oa]s?|cort[oa]s?)",
    r"no (?:\w+ ){0,4}(?:ahorita|orita|por ahora|por el momento|de momento)(?=\Z|[.,!])",
    r"(?:ahora|ahorita|orita) (?:\w+ )?(?:estoy|ando) (?:\w+ )?(?:trabajando|ocupad\w+|en el trabajo|"
    r"manejando no|lejos|fuera|de)",
    r"(?:mas |mejor |ya )?para (?:el|la) (?:verano|invierno|otono|primavera|otro mes|otra quincena|otro "
    r"ano|ano que viene)",
    r"esper(?:e|en|a|ame|eme|enme)\w* (?:a|hasta) que(?: \w+){0,3}",
    r"(?:estoy|ando) (?:\w+ )?(?:en (?:cuarentena|recuperacion|reposo|el hospital|incapacidad)|enferm[oa]|"
    r"operad[oa]|malito|gastad[oa]|corto|corta|sin (?:dinero|trabajo|feria))(?: \w+){0,4}",
    r"(?:me quede|estoy|ando) sin (?:trabajo|dinero|feria|jale|chamba)",
    r"(?:el|la) otr[oa] (?:mes|semana|quincena|ano)",
    r"en un(?:as|os) (?:\w+ )?(?:semanas|dias|meses)(?=\Z|[.,!]| mas| quiza| tal)",
    r"deje(?:me|n|nme)? (?:checo|veo|reviso|pregunto|junto|consulto|hablo|lo pienso|me fijo|checamos|"
    r"checar|ver|juntar|miro)",
    r"no (?:traigo|tengo|ando con|hay) (?:\w+ )?(?:feria|dinero|lana|plata|chance|cash|varo|pisto|chavos|"
    r"billete)",
    r"ya (?:les|le|te) (?:dire|digo|avis\w+|hablar\w*|llam\w+|marc\w+|escrib\w+)",
    r"(?:despues|pasando|luego) de (?:\w+ )?(?:semana santa|las fiestas|navidad|la quincena|ano nuevo|"
    r"pascua|mis vacaciones)",
    r"(?:ahorita|orita|ahora|horita|hoy|por hoy) (?:\w+ )?no (?:puedo|se puede|tengo|alcanzo|traigo|hay)?",
    r"no (?:se puede|puedo|podemos|alcanzo) (?:ahorita|ahora|por ahora|todavia|este mes|esta semana|por "
    r"el momento)",
    r"(?:al rato|luego|despues|mas tarde|en la noche) (?:\w+ )?(?:checo|reviso|veo|digo|miro|aviso|paso "
    r"el|se los)",
    r"no se,? (?:luego|despues|al rato|deje|ahorita)",
    r"cuando (?:\w+ )?(?:junte|ahorre|pueda|tenga|llegue|regrese|vuelva|mejore|acabe|termine)",
    r"(?:hablenme|llamenme|marquenme|busquenme|escribanme|textenme|recuerdenme|avisenme) (?:en|el|dentro|"
    r"despues de|hasta|para|pasando) (?:\w+ ){0,3}(?:semanas?|mes|meses|quincena|enero|febrero|marzo|"
    r"abril|mayo|junio|julio|agosto|septiembre|octubre|noviembre|diciembre|dias|ano)",
    r"(?:ahorita|ahora|por ahora|hoy|por el momento|de momento|en este momento|orita|horita|"
    r"esta semana|este mes)(?: mismo)? no",
    r"no (?:por )?(?:ahorita|ahora|el momento|por el momento|de momento|todavia|aun|orita|"
    r"este mes|en este momento)",
    r"(?:todavia|aun) no",
    r"mas (?:adelante|al rato|despues|tardecito)",
    r"al rato",
    r"(?:luego|despues)(?: (?:les|le|te|yo|me|se|lo|veo|vemos|aviso|hablamos|platicamos|quizas?)|"
    r" ?\Z|[.,!])",
    r"(?:dej|deje|dejame|dejeme|dejenme|deja) ?(?:me)? ?(?:\w+ )?(?:ver|pensar\w*|checar|revisar|"
    r"consultar|preguntar|hablar|reviso|veo|lo pienso)",
    r"(?:lo |voy a |tengo que |necesito |quiero )(?:\w+ )?(?:pienso|pensar\w*|pensando|checar|"
    r"revisar|ver|consultar\w*|ahorrar|esperar|preguntar\w*)(?: (?:mi|con|si|lo|la|cuando|y|el|"
    r"a)\b|\Z|[.,])",
    r"lo (?:voy a pensar|pienso|pensare|checo|consulto)",
    r"(?:yo|luego|despues|ya|les|le|te|mejor)+ (?:yo )?(?:les|le|te|los|la|lo)? ?(?:llamo|aviso|"
    r"marco|hablo|digo|escribo|contacto|confirmo|busco|llamare|avisare)",
    r"(?:estoy|ando|estamos|ahorita) (?:\w+ )?(?:ocupad[oa]|de viaje|fuera|trabajando mucho|"
    r"de vacaciones|sin dinero|corto|corta|gastad[oa])(?! (?:el|los|en la|por la))",
    r"no tengo (?:\w+ )?(?:dinero|tiempo|lana|plata|feria|chance|fondos|varo)",
    r"cuando (?:me |nos |ya )?(?:paguen|pague|cobre|tenga|pueda|regrese|vuelva|llegue|termine|"
    r"junte|cumpla|salga de|este list|este de vuelta|reciba|este de regreso|haya|pase)\w*",
    r"(?:el|la) (?:proxim[oa]|siguiente) (?:mes|ano|quincena)",
    r"el (?:mes|ano) (?:que viene|entrante|proximo)",
    r"(?:pregunt|record|record|avis|escrib|busqu|mand|recuerd|acuerd|text)\w*(?:nme|me|"
    r"eme) (?:\w+ )?(?:en|el|la|despues|luego|mas|otra|cuando|para|dentro|a|hasta|pasando|por|"
    r"de nuevo|manana|proximo)",
    r"(?:quiza|quizas|tal vez|talvez|a lo mejor) (?:\w+ )?(?:despues|luego|mas adelante|otro dia|"
    r"el (?:otro|proximo)|la proxima|en)",
    r"(?:en )?otr[oa] (?:momento|ocasion)",
    r"otro dia",
    r"(?:me )?espero(?: (?:a|hasta))?",
    r"hasta (?:que|el proximo|la proxima|los \d+|las \d+|\d+)",
    r"(?:a|en|hasta|llegue a) (?:las?|los )?(?:\d{2,3} ?mil|\d{2,3}[.,]?\d{3})(?: (?:millas|"
    r"kilometros|km))?",
    r"en (?:unos|un par de|dos|tres|seis|\d+) (?:meses|anos)",
    r"no se (?:todavia|aun|cuando|mi horario)",
    r"despues de (?:mis|las|mi|mi\w*) (?:vacaciones|viaje|operacion|boda|mudanza)",
    r"cuando (?:haga|mejore|pase|acabe) \w+",
    r"pronto\Z",
    r"la quincena",
    r"mas tarde\Z",
    r"pa la otra",
    r"les (?:aviso|confirmo|llamo|hablo)",
)
_ALONE = whole(
    r"(?:maybe )?later",
    r"(?:maybe )?soon",
    r"maybe",
    r"not (?:now|yet)",
    r"luego",
    r"despues",
    r"al rato",
    r"quizas?",
    r"tal vez",
    r"busy",
    r"a lo mejor",
    r"ocupad[oa]",
    r"not today",
    r"hoy no",
    r"idk",
    r"no se",
    r"we will see",
    r"well see",
    r"ya veremos",
    r"ya vere",
    r"remind me",
)


_CAN_WAIT = re.compile(r"\b(?:i|we) can (?:just )?wait\b")
"""Beside an hour it is where the customer waits."""


def holds(said: Said) -> bool:
    """Whether it puts us off to a later time."""
    if said.has_later:
        return True
    plain = NOT_LATER.sub(" ", said.text)
    if said.has_times:
        plain = _CAN_WAIT.sub(" ", plain)
    if said.asked == "odometer" and said.has_reading:
        plain = re.sub(r"\b(?:at|en|a|until|til|a los)\b[^a-z]*\d", " ", plain)
    return bool(_SAYS.search(plain) or _DICE.search(plain)) or any(_ALONE.match(one) for one in said.clauses)
