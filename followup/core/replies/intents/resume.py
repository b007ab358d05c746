"""`resume`: the customer gives the consent again."""

from __future__ import annotations

from followup.core.replies import stop_grammar
from followup.core.replies.said import Said, phrases
from followup.core.replies.words.entry import word_set

CODE = "resume"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "START", "unstop", "pls start texting me again", "opt back in", "resume the reminders",
        "u can text me again", "start", "turn the texts back on", "sign me back up", "i want the reminders again",
        "resubscribe", "add me back to the list", "put me back on the list", "begin texts again", "opt in",
        "ok to text me again", "resume", "subscribe", "restart the messages", "i changed my mind, text me again",
        "please resume messages", "let me get the texts again", "reactivate my texts",
        "start sending me texts again", "unsubscribed by mistake, put me back", "start texting me",
        "yes you can text me again", "please restart texts", "i want to receive texts again", "re-subscribe",
        "sign me up for texts again", "unstop please",
    ),
    "es": (
        "ALTA", "empezar", "pueden volver a mandarme mensajes", "quiero recibir mensajes otra vez", "reanudar",
        "comenzar", "ya mandenme mensajes otra vez", "deme de alta", "vuelvan a mandarme recordatorios",
        "quiero los mensajes de nuevo", "activar mensajes", "si me pueden escribir otra vez",
        "ponganme en la lista otra vez", "reactivar", "iniciar", "denme de alta de nuevo",
        "quiero volver a recibirlos", "suscribirme", "agreguenme de nuevo a la lista",
        "me di de baja sin querer, pongame otra vez", "otra vez mandenme los avisos",
        "ya pueden textearme de nuevo", "regresenme a la lista", "pueden volver a escribirme",
        "activen los mensajes", "quiero volver a recibir mensajes", "activen otra vez los mensajes",
        "reanudar mensajes", "pueden escribirme otra vez", "empezar otra vez",
    ),
}  # fmt: skip

KEYWORDS = word_set(
    "start unstop resume alta empezar comenzar iniciar reanudar subscribe resubscribe unquit optin",
) | {
    "opt in",
    "opt me in",
    "opt back in",
    "sign me back up",
    "subscribe me",
    "darme de alta",
    "dar de alta",
    "start again",
    "start texts",
    "start texting",
    "start messages",
    "resume texts",
    "empezar de nuevo",
    "restart",
    "suscribirme",
    "suscribir",
    "activar",
}
_SAYS = phrases(
    r"(?:otra vez quiero|quiero otra vez) (?:recibir )?(?:los|sus) (?:avisos|mensajes|textos|recordatorios)",
    r"(?:un ?pause|unmute) (?:my |the |those )?(?:reminders|texts|messages)?",
    r"start (?:it|them) (?:back )?up(?: again)?",
    r"send me (?:the |those |my )?(?:reminders|texts|messages) (?:again|back)",
    r"sign (?:me|us) (?:back )?up for (?:the |your )?(?:texts?|messages?|reminders?|alerts)(?: \w+)?",
    r"(?:empezar|comenzar|iniciar) (?:otra vez|de nuevo)",
    r"(?:turn|switch|put) (?:the |my |those |these )?(?:texts?|messages?|reminders?|alerts?|it|them|"
    r"me) (?:\w+ )?(?:back on|on again)",
    r"(?:get|receive|have|want) (?:\w+ ){0,3}(?:texts?|messages?|reminders?|alerts) (?:again|back)",
    r"(?:reactivate|restart|reenable|turn on|restore|re ?activate) (?:\w+ ){0,2}(?:texts?|messages?|"
    r"reminders?|alerts?|notifications?|account)",
    r"(?:by (?:mistake|accident)|accidentally|didnt mean to)(?: \w+){0,4} (?:back|again|stop|"
    r"unsubscribe\w*)(?: \w+){0,2}",
    r"unsubscribed by (?:mistake|accident)(?: .*)?",
    r"(?:ya )?(?:mand|envi|escrib|text)\w*(?:me|nos|n) (?:\w+ ){0,4}(?:otra vez|de nuevo|nuevamente)",
    r"otra vez (?:mand|envi|escrib|text)\w*(?: \w+){0,3}",
    r"quiero (?:\w+ )?(?:los |las |mis )?(?:mensajes|textos|recordatorios|avisos)(?: \w+)? (?:de nuevo|"
    r"otra vez|nuevamente)",
    r"(?:quiero|deseo) volver a (?:recib|ten)\w*",
    r"(?:pong|agreg|regres|met|incluy|suscrib|anot)\w*(?:me|nme) (?:\w+ ){0,3}(?:lista|otra vez|de "
    r"nuevo)(?: otra vez| de nuevo| a la lista)?",
    r"(?:baja|cancele) (?:sin querer|por error|por accidente)(?: .*)?",
    r"(?:ya )?(?:pueden|puede) text\w+(?: \w+){0,2}",
    r"(?:start|resume|restart|begin|continue) (?:\w+ ){0,2}(?:texting|texts?|messag\w+|reminders?|"
    r"sending|notifications?|alerts)(?: me)?",
    r"(?:can|may|please|ok to|u can|you can|could you|feel free to) (?:\w+ )?(?:text|message|"
    r"remind|contact|send) (?:me )?(?:\w+ )?(?:again|reminders again|texts again|once more|"
    r"anytime again)",
    r"opt(?:ing)? (?:me )?(?:back )?in",
    r"(?:re ?subscribe|subscribe)(?: me)?",
    r"unstop",
    r"(?:put|add|sign) me back (?:on|up|to)(?! (?:the )?(?:schedule|calendar))",
    r"(?:want|like|ok with|fine with) (?:\w+ ){0,3}(?:texts?|messages?|reminders?) (?:again|back)",
    r"(?:text|texting|message|messaging|remind) me again(?= ?(?:\Z|[.,!]|please))(?! later)",
    r"(?:pueden|puede|puedes|vuelvan?|quiero que|vuelve) (?:\w+ )?(?:a )?(?:volver a |"
    r"vuelvan a )?(?:mand\w+|envi\w+|escrib\w+|text\w+)(?: \w+){0,2} (?:otra vez|de nuevo|"
    r"nuevamente|mensajes)(?: otra vez| de nuevo)?",
    r"(?:volver|vuelvan) a (?:mand\w+|envi\w+|escrib\w+|recibir|text\w+)(?: \w+){0,2}",
    r"(?:inscrib|anot|apunt|met|pon|pong|agreg|inclu|registr|regres|suscrib)\w* (?:otra vez|nuevamente|de nuevo|de "
    r"vuelta) "
    r"(?:a|en|para|con|de) (?:\w+ ){0,2}(?:mensajes?|textos?|lista|avisos|recordatorios)",
    r"quiero (?:\w+ )?recibir (?:\w+ )?(?:mensajes|textos|recordatorios|avisos)",
    r"(?:dar|darme|denme|deme) de alta",
    r"si quiero (?:sus|los|mis|recibir|que me (?:escrib|mand|text|avis)\w+)(?: \w+)?",
    r"(?:doy|tienen|les doy|va) (?:mi )?permi[sz]o (?:\w+ ){0,3}(?:escrib|mand|text|envi|avis)\w*",
    r"volver a text\w+(?: al \w+)?",
    r"que me (?:sigan|vuelvan a) (?:avis|escrib|mand|text|envi)\w+",
    r"(?:reanudar|reactivar|activar|reactiven|activen)(?: \w+){0,2}",
)
_NO_RESUME = phrases(
    r"(?:dont|do not|never|didnt|not|no) (?:\w+ ){0,3}(?:start|resume|text|message|mand\w+|"
    r"envi\w+|escrib\w+|recibir|subscribe|sign|want|opt)\w*",
    r"if you (?:text|message)",
    r"(?:escrib|text|mand|avis|pregunt)\w*me (?:otra vez|de nuevo|nuevamente) (?:el|la|en|manana|despues|para|cuando|"
    r"dentro|a|pasando|hasta)(?: \w+)*",
    r"why",
    r"(?:no|dejen|ya no|nunca) (?:me )?(?:vuelvan?|vuelvas) a",
    r"(?:ill|i will|if) (?:\w+ )?start",
    r"(?:ask|remind|try|contact|text|check with|message) me again (?:in|later|next|after|when|around|on|tomorrow)",
)


def holds(said: Said) -> bool:
    """Whether the consent is given again."""
    if any(one in KEYWORDS for one in said.bare):
        return True
    plain = _NO_RESUME.sub(" ", said.text)
    return bool(_SAYS.search(plain)) or stop_grammar.gives_back(plain)
