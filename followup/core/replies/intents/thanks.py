"""`thanks`: the customer is being polite; nothing to do."""

from __future__ import annotations

from followup.core.replies.said import Said, phrases

CODE = "thanks"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "thanks", "thx!", "ty, have a good one", "appreciate it", "thank u so much", "no worries", "thanks a bunch",
        "tysm", "you too", "have a great weekend", "thanks for the heads up", "cheers", "many thanks",
        "thanks for letting me know", "god bless", "ur the best", "thank you kindly", "good to know thanks",
        "happy thanksgiving", "🙏", "appreciate yall", "merry christmas to you all", "thanks again",
        "much appreciated", "thx so much", "have a blessed day", "thank you", "thx", "thanks so much",
        "appreciated", "thanks for the reminder", "you guys rock", "thank you have a great day", "ty!", "bless you",
        "thanks buddy", "thanks for telling me", "thanks for everything", "thank u very much", "good night",
        "have a good weekend", "you as well", "thanks bud", "super thanks", "blessings",
    ),
    "es": (
        "gracias", "muchas gracias", "igualmente, buen dia", "se lo agradezco", "bendiciones", "mil gracias",
        "gracias x avisar", "grax", "que tenga buen dia", "muy amable", "gracias por el aviso", "dios lo bendiga",
        "feliz fin de semana", "te lo agradezco", "buenas noches gracias", "gracias igualmente", "saludos",
        "muy amables gracias", "feliz navidad", "gracias de todos modos", "grasias", "gracias por avisarme",
        "buen dia", "que pasen bonito dia", "muchisimas gracias", "se agradece", "gracias por el recordatorio",
        "le agradezco", "gracias amigo", "que amables", "gracias, bonito dia", "gracias por todo",
        "muchas gracias por avisar", "que dios te bendiga", "buen fin", "le agradezco mucho", "gracias, igual",
        "hasta luego gracias",
    ),
}  # fmt: skip

_SAYS = phrases(
    r"that is (?:nice|kind|sweet|thoughtful) of (?:you|yall)",
    r"you as well",
    r"blessings",
    r"(?:thats|that is) (?:great|good|awesome|perfect) thanks",
    r"see (?:ya|you|u)(?: later| soon| around)?\Z",
    r"good look(?:ing?|n)? out",
    r"good lookin out",
    r"(?:you|yall) (?:guys )?rock",
    r"que amables?",
    r"thanks (?:for (?:letting|the|reaching|checking|telling|your|reminding|everything)|again|a (?:bunch|"
    r"lot|ton|million))(?: \w+){0,4}",
    r"(?:you|u|your|youre|ya|yall) (?:are |r )?(?:the )?best",
    r"(?:ur|your) the best",
    r"(?:thats|that is|so|very|how) (?:\w+ )?(?:nice|kind|sweet|thoughtful)(?: of \w+)?(?: \w+)?",
    r"bless (?:you|u|yall)",
    r"(?:que )?dios (?:lo|los|la|le|les|te) (?:bendiga|cuide|pague)\w*",
    r"feliz (?:fin|dia|tarde|noche|semana|navidad|ano|pascua|thanksgiving)(?: \w+){0,3}",
    r"(?:te|se|les?) (?:lo )?agradezco(?: mucho)?",
    r"thank(?:s| you|z|ful)?(?! for nothing)",
    r"thanksemoji",
    r"(?<!not )(?<!dont )(?<!didnt )appreciate(?:d)?(?: it| you| that| the)?",
    r"(?:have|enjoy) (?:a|your|the) (?:\w+ )?(?:day|one|weekend|night|evening|week|holiday|"
    r"afternoon)",
    r"(?:you|u) too",
    r"(?:your|youre|you are) welcome",
    r"good (?:morning|afternoon|evening|night|day)",
    r"(?:hi|hello|hey|howdy)\Z",
    r"no (?:worries|problem|prob|prblm|rush)",
    r"happy (?:holidays|thanksgiving|new year|birthday|easter|monday|friday)",
    r"merry christmas",
    r"great (?:service|job|work)",
    r"love (?:you guys|your shop|yall)",
    r"cant complain",
    r"god bless",
    r"take care",
    r"bye",
    r"cheers",
    r"good to (?:know|hear)",
    r"youre the best",
    r"(?:ok|got it|understood|noted|cool|great|perfect|will do|alright|sounds good|good|fine|"
    r"awesome|nice|sure|copy)\Z",
    r"\Ak\Z",
    r"same to you",
    r"lol",
    r"haha\w*",
    r"(?:muchas |mil |muchisimas )?gracias",
    r"agradec\w+",
    r"(?:le|se lo|les) agradezco",
    r"igualmente",
    r"(?:que )?(?:tenga|tengan|pase|pasen|ten) (?:un |una )?(?:\w+ )?(?:buen|bonito|excelente|"
    r"lindo|feliz)\w*(?: \w+)*",
    r"buen(?:os|as|a)? (?:dias?|tardes?|noches?|fin|semana)",
    r"bendiciones",
    r"dios (?:los|le|te) bendiga",
    r"saludos",
    r"hola\Z",
    r"de nada",
    r"(?:que )?amable",
    r"no (?:hay problema|se preocupe\w*|te preocupes)",
    r"feliz (?:navidad|ano|dia)",
    r"(?:enterad[oa]|entendido|ok|perfecto|excelente|bueno|listo|sale|vale|genial|muy bien)\Z",
    r"jaja\w*",
    r"hasta luego",
    r"adios",
)


def holds(said: Said) -> bool:
    """Whether politeness stands in it."""
    return bool(_SAYS.search(said.text))
