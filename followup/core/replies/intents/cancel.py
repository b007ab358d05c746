"""`cancel`: the customer calls off the booking that stands."""

from __future__ import annotations

from followup.core.replies.said import Said, phrases, whole

CODE = "cancel"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "cancel my appointment", "need to cancel tmrw", "can't make it", "wont be able to come in sorry",
        "something came up, have to cancel", "pls call off my appt", "gotta cancel", "not gonna make it",
        "cant come thursday sorry", "please take me off the schedule", "im not coming", "scratch that appt",
        "we have to cancel thursday", "cancel it pls", "i wont be there", "no longer need the appointment",
        "dont need to come in anymore", "kids are sick cant make it", "cant do it anymore",
        "changed my mind dont want to come", "forget the appointment", "gonna have to bail on thursday",
        "wont make it in", "sorry have to back out", "i need to cancel the visit", "not able to make my appt",
        "never mind cancel my booking", "cancel the appointment", "need to cancel my appt for thursday",
        "i wont be coming", "gotta call off thursday", "i cant come in", "not coming in thursday", "nvm cancel it",
        "dont need the appointment anymore",
    ),
    "es": (
        "cancelar mi cita por favor", "quiero cancelar la cita", "ya no voy a poder ir", "no puedo ir, cancelen",
        "cancele lo de manana porfa", "cancelenme la cita", "ya no voy", "no voy a ir siempre",
        "me salio algo, no puedo ir", "no podre llegar", "siempre no voy a ir", "quiten mi cita",
        "ya no necesito la cita", "no me esperen", "se me enfermo el nino no voy", "cancele porfavor el jueves",
        "no la voy a hacer", "tengo que cancelar", "no voy a poder llevarlo", "olvide la cita", "no alcanzo a ir",
        "ya no quiero la cita", "me es imposible ir", "no asistire", "borre mi cita del jueves",
        "cancelamos lo del jueves", "no podre ir disculpe", "cancele la cita por favor",
        "tengo que cancelar la cita", "ya no ire", "no podre ir el jueves", "no puedo asistir", "cancelame la cita",
        "ya no quiero ir", "no voy a llegar, cancelela",
    ),
}  # fmt: skip

_VISIT = r"(?:appointment|booking|visit|reservation|cita|reservacion|turno|slot)"
_DAY = r"(?:today|tomorrow|(?:mon|tues|wednes|thurs|fri|satur|sun)day|tues|thurs|weds?|fri)"
_TOLD = phrases(
    r"(?:dont|do not|wont|no longer) need (?:it )?(?:tomorrow|today|(?:mon|tues|wednes|thurs|fri|satur)day|the "
    r"(?:appointment|visit|slot|spot))"
    r"(?: (?:anymore|any more|no more|after all))?",
    r"(?:ya )?no (?:ocupo|necesito|voy a ocupar|voy a necesitar) (?:ya )?(?:lo del?|la cita del?|la cita) (?:manana|"
    r"hoy|lunes|martes|miercoles|"
    r"jueves|viernes|sabado)?",
    r"(?<!dont )(?<!not )(?<!didnt )(?<!wont )(?<!never )(?<!ever )forget (?:about )?(?:today|tomorrow|(?:mon|tues|"
    r"wednes|"
    r"thurs|fri|satur|sun)day)(?=\Z|[ ,.!]+(?:i|we|ill|im|it|please|thanks|call|cancel|scrap|just))",
    rf"(?:take|pull|drop|get|remove|delete|strike|scratch|cross|leave|wipe) (?:me|us|my name|it|my car) (?:off|from|"
    rf"out) "
    rf"(?:of )?(?:the |your )?(?:(?:{_DAY})s? )?(?:(?!text|messag|remind|call|mail)\w+ )?(?:schedule|calendar|books?|"
    rf"board|"
    rf"line ?up|roster|docket|slate)",
    rf"(?:take|pull|drop|get|remove|strike|scratch|cross) (?:me|us|my name) (?:off|from|out) (?:of )?(?:the |your )?"
    rf"(?:{_DAY})s? (?:list|page|slot)",
    r"(?:wipe|clear|void|pull) (?:the|my|that|our) (?:\w+ )?(?:appointment|booking|visit|reservation|slot|spot|name)",
    r"(?:take|strike|leave|cross) (?:me|us|my name) (?:out|off) (?:of )?(?:the |your )?(?:books?|calendar|"
    r"schedule|page)",
    r"(?:strike|cross|scratch|take) me (?:from|off) (?:\w+days?|tomorrows?|todays?)(?: \w+)?",
    r"(?:plans fell through|something came up|snow day)(?=[ ,.!]+(?:so )?(?:cancel|scrap|wipe))",
    r"(?:scrap|nix|axe|kill|wipe|scratch|strike) (?:it|that|me|us|mine|my (?:appointment|booking|spot|slot|"
    r"visit|name))(?: from(?: \w+){0,3}| off(?: \w+){0,3}| out)?",
    r"(?:take|strike|get) (?:me|us|my name) (?:off|out of|from) (?:the |your )?(?:books?|schdule|list for|"
    r"\w+days? (?:page|list))",
    r"(?:forget|drop|kill|nix|delete|erase) (?:about )?(?:the|my|that) (?:\w+ )?(?:appointment|booking|"
    r"visit|reservation|cita|slot)",
    r"(?:quit|borr|elimin|olvid)\w* (?:\w+ ){0,2}(?:cita|reservacion|turno)",
    r"cancel(?:l?ed|l?ing|s)?",
    r"cancelation",
    r"call(?:ing)? (?:it|that|my \w+|the \w+|the (?:whole|entire) \w+|everything|things|it all)? ?off",
    r"scratch (?:the|my|that) (?:\w+ )?" + _VISIT,
    rf"(?:scrap|axe|ditch|cut|lose|skip) (?:the|my|that|our) (?:\w+ )?{_VISIT}",
    rf"(?:so|just|please|gotta|got to|have to|need to|must|going to|can you|^)(?: please| just)? "
    rf"(?:drop|scrap|nix|kill|axe|scratch|skip) (?:{_DAY})(?! (?:it|the|my|off|at|by)\b)",
    rf"take (?:me|us|it|my name) off (?:the (?:schedule|calendar|books?)|(?:for )?{_DAY})",
    r"remove (?:me|my appointment) from the (?:schedule|calendar|books?)",
    r"(?:dont|no longer|do not|wont|will not|not (?:going to|gonna)) (?:be )?(?:need|want|using|use|making|"
    r"keeping)(?:ing)? (?:\w+ ){0,2}" + _VISIT,
    r"(?:quit|borr|elimin|anul|sac|desapunt|liber|suelt|solt)\w* (?:\w+ ){0,2}(?:cita|reservacion|reserva|turno|hora|"
    r"lugar|espacio|"
    r"campo|agenda)(?! (?:de|del) (?:mensajes|textos))",
    r"(?:anul|desapunt|desagend)\w*(?:la|lo|me|enla|enlo|nme)",
    r"(?:anul|borr|quit|elimin)\w* (?:\w+ )?lo de\b",
    r"d(?:a|e|ale|ele|alo|elo) de baja (?:\w+ ){0,2}(?:cita|turno|lo de)",
    r"(?:sin efecto|olvid\w+) (?:\w+ )?(?:la|mi|lo de|lo del) (?:\w+)",
    r"(?:borr|quit|sac)\w*me (?:del? (?:dia|manana|hoy|lunes|martes|miercoles|jueves|viernes|sabado)|de la "
    r"agenda)(?: \w+){0,2}",
    r"no (?:me )?(?:guard|apart)\w+ (?:\w+ )?(?:espacio|lugar|turno|hora|cita)",
    r"cancel(?:al[ao]|el[ao]|ar|en|e|a|o|ame|eme|enme|arla|enla|ela|amos|emos|ado|ada|cion)",
)
_UNABLE = phrases(
    r"(?:im|i am|were|we are|ill|i will) (?:not|no longer) (?:showing|going to show|gonna show|be showing)(?: up)?",
    r"no ?show from (?:me|us)|^(?:\W|sorry |its |it is |ill be |im |going to be |gonna be )*(?:a )?no ?show(?! up|"
    r" yet)\b",
    r"no way (?:i|we|im|ill|were) (?:\w+ )?(?:get|make|getting|making|coming|come|be)(?: \w+)?",
    r"(?:im |we are |i am |were )?not coming(?: in)?(?: \w+day| tomorrow| today)?(?=\Z|[.,!])",
    r"no me esperen?",
    r"no cuenten? conmigo",
    r"dejemosl[oa] asi",
    r"no pude (?:salir|llegar|ir|escap)\w*(?: \w+){0,3}",
    r"^siempre no\Z",
    r"ya mejor no",
    r"(?:ya )?no (?:la|lo) (?:necesito|ocupo|quiero) (?:la|mi|esa) (?:cita|hora|reserva)",
    r"(?:siempre|ya|pues|mejor|entonces) no (?:voy|vamos|ire|puedo|podre)(?! (?:el|hasta|a las|antes))",
    r"no (?:voy|vamos)(?: siempre)?(?=\Z|[.,!]| gracias| disculp\w+| perdon)",
    r"no (?:la|lo) voy a hacer",
    r"(?:me|nos) es imposible",
    r"no (?:voy a poder|podre|puedo) (?:siempre|ya|ese dia ya)?\Z",
    r"(?:have|had|need|going|got|gonna) to (?:back out|bail|skip|miss|pass on)",
    r"(?:wont|cant|not gonna|not going to) (?:\w+ )?(?:come in|make it)(?: \w+){0,3} (?:after all|anymore|"
    r"sorry)",
    r"(?:cant|wont|wont be able to|not able to|not going to|not gonna|couldnt|unable to|"
    r"not going to be able to|cant be able to|will not|aint gonna|aint going to|may not|"
    r"dont think i can|dont think ill) (?:be able to )?(?:make (?:it|my|the|that|this|our)|"
    r"come(?: in)?|be there|be coming|get there|be in|keep (?:it|my|the)|attend|show up|"
    r"bring (?:it|her|my car|the car)|get (?:in|away|off)|do it)",
    r"(?:im|i am|were|we are) not coming",
    r"wont (?:be|make)",
    r"have to (?:pass|bail|back out)",
    r"changed my mind",
    r"^(?:never ?mind|nvm|forget (?:it|about it))",
    r"(?:dont|no longer|do not) need (?:it|this|that|to come(?: in)?)",
    r"cant come",
    r"no (?:puedo|podre|voy a poder|vamos a poder|podemos|alcanzo a|voy a alcanzar a|podria|pude|"
    r"me es posible) (?:\w+ )?(?:ir|llegar|asistir|llevar\w*|pasar|hacer\w*|estar|acudir|venir)",
    r"(?:ya )?no (?:voy|vamos) (?:a (?:ir|llegar|asistir|poder)|\Z)",
    r"no ire",
    r"ya no (?:voy|puedo|podre|quiero|necesito|voy a)",
    r"(?:se me|se nos) (?:complico|presento|atraveso)",
    r"(?:olvid\w+lo|mejor no(?: voy)?)\Z",
    r"cambie de (?:opinion|idea|parecer)",
    r"no (?:puedo|podre)\Z",
    r"no la voy a (?:usar|necesitar)",
    r"no (?:asistire|llegare|podre)",
)
_NOT_THE_BOOKING = phrases(
    r"no (?:la |me )?cancel(?:en?|es)",
    r"no (?:\w+ ){0,4}cancel\w+(?: \w+)?",
    r"no me quit\w+ (?:\w+ )?(?:cita|turno|lugar|hora|espacio)",
    r"cancel (?:(?!and |quit |stop )\w+ ){0,3}(?:texts?|messages?|subscription|reminders|notifications|alerts|texting)",
    r"(?:dont|do not|didnt|not|no|never)(?! (?:mind|thanks|problem|wait)) (?:\w+ )?cancel\w*",
    r"noise cancel\w*",
    r"cancel\w* (?:culture|fee|policy)",
    r"if i (?:have to |need to )?cancel",
    r"(?:can|could|may) i cancel (?:any ?time|later|if|free)",
    r"cancel\w* (?:\w+ ){0,3}(?:suscripcion|mensajes|textos)",
    # somebody else, by name, no longer comes along
    r"(?<=, )(?!(?:i|we|it|she|he|they|so|but|and|sorry|just|really|probably|car|truck) )[a-z]+ wont be "
    r"(?:there|coming)(?: along)? anymore",
)
_KEYWORD = whole(r"cancel", r"cancelar", r"cancelen?")
_TODAY_ONLY = phrases(
    r"(?:cant|wont|no puedo|not) (?:\w+ ){0,4}(?:before|until|till|after(?! all)|by|antes|hasta|despues)"
)

_MORE_LIKE = phrases(r"more like", r"but (?:ill|i will|can) be there", r"pero llego")


def holds(said: Said) -> bool:
    """Whether a booking is called off."""
    plain = _NOT_THE_BOOKING.sub(" ", said.text)
    if _TOLD.search(plain):
        is_keyword_only = not said.has_booking and any(_KEYWORD.match(one) for one in said.bare)
        return not is_keyword_only
    return (
        said.has_booking
        and bool(_UNABLE.search(plain))
        and not _TODAY_ONLY.search(plain)
        and not _MORE_LIKE.search(plain)
    )
