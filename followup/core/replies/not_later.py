"""Words that look like putting us off and are none: waiting in the shop, a call at a time, doubts of other things."""

from __future__ import annotations

from followup.core.replies.said import phrases

NOT_LATER = phrases(
    r"(?:drive|run|ride|keep|driving|running|wheels) (?:\w+ ){0,3}(?:until|til+) (?:it|she|he|the) (?:\w+ "
    r"){0,2}(?:quits|dies|falls?|goes|"
    r"blows|breaks)(?: \w+){0,2}",
    r"(?:bien|perfecto|bueno|contento|contenta) hasta que (?:vi|note|me di|encontre|llegue)(?: \w+)*",
    r"(?:traer|manejar|usar|dejar|ando|andar) (?:l[oa] )?asi hasta (?:que|donde)(?: \w+){0,3}",
    r"(?:still )?waiting (?:on|for) (?:my|the|a|that|our) (?:\w+ )?refund(?: \w+)*",
    r"after the (?:bridge|light|exit|gas station|corner|church|school|bank|stop sign|overpass)",
    r"(?:ahi|alli|aqui|alla) (?:(?:me|lo|la) )?(?:espero|esperare)",
    r"(?:me|nos) (?:(?:pueden?|podrian?|van a|va a) )?(?:llev|recog|recoj|dej|regres|acer)\w+(?: \w+){0,4} "
    r"(?:despues|luego|mas tarde)",
    r"(?:just |finally )?(?:hit|passed) \d[\d,. ]*(?:k|thousand)?(?: (?:miles|mi))? (?:today|now|this morning|"
    r"yesterday)",
    r"va llegando a l[oa]s \d[\d,. ]*(?:mil)?",
    r"(?:ya (?:llego|paso|pase)|acaba de (?:llegar|pasar)) (?:al? )?(?:l[oa]s )?\d[\d,.]*",
    r"(?:im |i am |i )?(?:not sure|unsure|dont know|no se)(?: if| whether| si| that| i)? (?:it matters|its important|"
    r"it is "
    r"important|this matters|you need to know|i understand|i follow|i get (?:it|this|what)|sea importante|les "
    r"importe|sirva)"
    r"(?: \w+){0,6}",
    r"(?:what (?:if|happens (?:if|when)) i (?:just )?wait|is it (?:bad|ok|okay|safe|dangerous) (?:if i wait|to wait)|"
    r"(?:que pasa "
    r"si|es malo si) (?:me )?espero)(?: \w+){0,4}",
    r"cualquier otro dia",
    r"(?:le|les) (?:hablo|escribo|llamo) (?:de parte|de|por|para|a nombre|porque)\b",
    r"for now thanks",
    r"set for now",
    r"not (?:going to|gonna|about to) (?:check|look|go (?:out|look|check))(?: \w+){0,3}",
    r"(?:well|we will|ill|i will|gonna|going to|let me|just) (?:just )?let (?:it|this one|that one|things) (?:ride|"
    r"go|slide|be)",
    r"que pasa si espero",
    r"por que tan pronto",
    r"how long do i have to wait",
    r"cuanto me espero",
    r"(?:dont|do not) know any (?!when|what|yet)\w+\Z",
    r"need to speak (?:with|to)(?: \w+)*",
    r"(?:ill|i will|we will|well|i can) see (?:you|u|ya|yall)(?: \w+){0,2}",
    r"remind me (?:who|what|where|why|which|how)(?: \w+)*",
    r"going out(?! of)",
    r"(?:still |todavia )?(?:waiting|espero|esperando)(?: on| for)? (?:my |mi |el |the )?(?:refund|"
    r"reembolso|dinero|money back)",
    r"(?:need|have|want|got) to (?:talk|speak) (?:to|with) (?:the|a|your|someone|somebody|manager)(?: "
    r"\w+)*",
    r"wait(?:ing)? (?:on it|for it|with it|there|here|while|inside|for my car)",
    r"(?:la|el|lo) mas (?:tarde|pronto)",
    r"cuanto (?:me )?(?:tengo que|hay que|voy a) esperar",
    r"ahorita (?:llego|voy|estoy ahi)",
    r"(?:mand|pas|envi|d)\w*(?:nme|eme|me|ame) (?:la |su |tu |una? |el )?(?:direccion|ubicacion|domicilio|"
    r"precio|cotizacion|numero|hora)(?: \w+)?",
    r"hasta que hora(?: \w+)*",
    r"(?:still|its|it is|now|at|around|about|just (?:hit|rolled over|turned|passed|crossed)|we are|were|"
    r"were at|en|llego a|anda en|va en) (?:\w+ )?(?:at |a )?\d[\d,.]* ?(?:k|mil|thousand)?(?: (?:miles|"
    r"millas|mi|km))(?! (?:from|more|mas))",
    r"let me (?:talk|speak) to (?:somebody|someone|a|the|your)(?: \w+)*",
    r"cuanto (?:me )?tengo que esperar",
    r"who. .*",
    r"(?:not |no )?later than",
    r"check(?:ing)? ?(?:out|in) (?:later than|at|on|before|after|by|around|from)",
    r"(?:any|some)(?:thing|time)? later(?: (?:time|slot|day))?",
    r"later (?:slot|time|appointment|one|in the (?:day|morning|afternoon|week)|that (?:day|"
    r"morning|afternoon)|today|than|this (?:week|afternoon|morning|evening))",
    r"(?:it is|is|its|shes|hes|currently|now|im|i am|sitting|right|already|was|car|just|va|esta|anda|ando|"
    r"voy) (?:now |about |right |ya |como )*(?:at|en|a) (?:about |like |around |"
    r"como )?\d[\d,. ]*(?:k|mil|thousand)?",
    r"just (?:hit|reached|turned|passed)(?: over)? \d[\d,. ]*(?:k|mil|thousand)?",
    r"see (?:you|ya) later",
    r"talk (?:to you )?later\Z",
    r"cant wait",
    r"ill wait(?! until| till| for)",
    r"can wait (?:there|in|here|at)",
    r"wait (?:there|here|for it|in the)",
    r"(?:call|phone|ring) me(?: (?:back|please|when|later|tomorrow|after|at|around|today|anytime|"
    r"any time|on|asap|in|next|if|about|to|between|first|and|or|,).*)?",
    r"check engine",
    r"(?:let|lemme) me know",
    r"let (?:me|us) know",
    r"when (?:can|could|should|do|will|are|is|would|you)\b",
    r"dont have time to wait",
    r"have to ask you",
    r"not ready\?",
    r"need to check (?:my|the) (?:brakes?|tires?|oil|car)",
    r"for now(?: i| we)? (?:can|will)",
    r"(?:llamenme|llameme|llamame|marquenme|marqueme|hablenme)(?! (?:en (?!la|el)|dentro|hasta|pasando|"
    r"el (?:otro|proximo)))(?: .*)?",
    r"when i get (?:off|there|in|home|out)",
    r"when im off",
    r"cuando salga del? (?:la )?(?:trabaj\w+|jale|turno|chamba|clases?|escuela|kinder|junta)",
    r"(?:me )?espero (?:ahi|alli|aqui|en|a que|mientras)",
)
