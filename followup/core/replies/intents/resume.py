"""`resume`: the customer gives the consent again."""

from __future__ import annotations

from followup.core.replies.said import Said, phrases
from followup.core.replies.words.entry import word_set

CODE = "resume"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "START",
        "unstop",
        "pls start texting me again",
        "opt back in",
        "resume the reminders",
        "u can text me again",
    ),
    "es": (
        "ALTA",
        "empezar",
        "pueden volver a mandarme mensajes",
        "quiero recibir mensajes otra vez",
        "reanudar",
        "comenzar",
    ),
}

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
    r"quiero (?:\w+ )?recibir (?:\w+ )?(?:mensajes|textos|recordatorios|avisos)",
    r"(?:dar|darme|denme|deme) de alta",
    r"(?:reanudar|reactivar|activar|reactiven|activen)(?: \w+){0,2}",
)
_NO_RESUME = phrases(
    r"(?:dont|do not|never|didnt|not|no) (?:\w+ ){0,3}(?:start|resume|text|message|mand\w+|"
    r"envi\w+|escrib\w+|recibir|subscribe|sign|want|opt)\w*",
    r"if you (?:text|message)",
    r"why",
    r"(?:no|dejen|ya no|nunca) (?:me )?(?:vuelvan?|vuelvas) a",
    r"(?:ill|i will|if) (?:\w+ )?start",
    r"(?:ask|remind|try|contact|text|check with|message) me again (?:in|later|next|after|when|around|on|tomorrow)",
)


def holds(said: Said) -> bool:
    """Whether the consent is given again."""
    if any(one in KEYWORDS for one in said.bare):
        return True
    return bool(_SAYS.search(_NO_RESUME.sub(" ", said.text)))
