"""`call`: the customer wants to be phoned, or to deal with a person."""

from __future__ import annotations

from followup.core.replies.said import Said, phrases

CODE = "call"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "call me", "can someone give me a ring", "id rather talk to a person", "pls call me after 5",
        "can i speak w the mechanic", "just call me", "give me a call", "have someone call my cell",
        "i dont text, call", "let me talk to somebody", "can u call my husband", "phone me tmrw",
        "call when u get a chance", "need to speak to the manager", "easier to talk on the phone",
        "can i get a call back", "want to talk to a real person", "have jim call me", "get me a human",
        "ring my work number", "who can i talk to about this", "please have the service guy call", "call at noon",
        "prefer a phone call", "connect me with someone", "please call", "call me when you can",
        "can you guys call me real quick", "i need to talk to the manager", "give me a ring tomorrow",
        "let's talk on the phone", "have the tech call me", "i want to speak with someone",
        "could someone phone me", "just call my wife", "talk to me by phone please", "just call", "call me instead",
        "can you call my wife", "i want a phone call", "have the owner call me", "can u ring me", "call me at work",
        "who do i speak to", "i'd like to talk about it over the phone",
    ),
    "es": (
        "llamenme", "me pueden marcar?", "quiero hablar con alguien", "hableme por favor despues de las 5",
        "puedo hablar con el mecanico?", "llamame pa tras", "prefiero por telefono", "marqueme al cel",
        "echeme una llamada", "necesito hablar con el gerente", "que me llame el encargado",
        "me puede llamar porfa", "mejor hablamos por telefono", "denme una llamada", "llameme cuando pueda",
        "con quien puedo hablar", "quiero hablar con una persona", "me regresa la llamada", "hablenme al trabajo",
        "me marcan porfavor", "regresenme la llamada", "llame a mi esposa", "comuniqueme con el dueno",
        "prefiero que me hablen", "puede alguien llamarme", "llameme", "me llaman porfa", "quiero que me llamen",
        "pueden llamarme", "prefiero hablar por telefono", "que me hable el mecanico", "necesito que me llamen",
        "marcame", "me habla por favor", "llamen a mi esposo", "quiero que me marquen", "mejor llameme",
        "hable con mi esposa", "me urge hablar con ustedes", "deme una llamada",
    ),
}  # fmt: skip

_SAYS = phrases(
    r"^(?:please |pls )?call(?: please)?\Z",
    r"(?:need|want|have|like) to (?:talk|speak) (?:to|with) (?:the |a |your |you |someone|somebody)(?: "
    r"\w+)?",
    r"(?:dont|do not|cant|not) (?:\w+ )?(?:text|texting|do texts?|do texting|type)(?: \w+)?,? (?:just |"
    r"please |so )?call(?: me)?",
    r"(?:let me|want to|need to|can i|could i|get to|rather|like to|have to) (?:\w+ )?(?:talk|speak|chat) "
    r"(?:to|with) \w+",
    r"call (?:when|at|after|around|before|if|us|me|anytime|tomorrow|today|back|asap)(?: \w+){0,5}",
    r"get me (?:a|an|the|your) (?:\w+ )?(?:human|person|manager|owner|mechanic|rep\w*|supervisor)",
    r"who (?:can|do|should|could) i (?:talk|speak|call)(?: to| with)?(?: \w+){0,3}",
    r"(?:have|get|ask|tell) (?:\w+ ){1,3}(?:to )?(?:call|ring|phone)(?: me| us| back)?",
    r"(?:connect|put|transfer|patch) me (?:with|to|through)(?: \w+){0,3}",
    r"(?:manager|owner|mechanic|advisor|someone|somebody|tech|person|service guy) (?:\w+ )?(?:call|phone|"
    r"ring) me(?: back)?",
    r"(?:call|phone|ring|dial) (?:me|us|my (?:wife|husband|cell|phone|work|office|house|son|"
    r"daughter|mom|dad))",
    r"(?:give|gimme) (?:me |us )?(?:a )?(?:quick )?(?:call|ring|buzz|shout|holler)",
    r"(?:have|get|ask|need|want) (?:someone|somebody|him|her|them|the (?:manager|owner|mechanic|"
    r"tech\w*|advisor)|a (?:person|human|manager)|you|u|a) (?:to )?(?:call|phone|ring|"
    r"contact)(?: me)?",
    r"(?:talk|speak|chat|deal) (?:to|with|w) (?:a |an |the |some|your |my )?(?:\w+ )?(?:person|"
    r"human|people|one|someone|somebody|body|manager|owner|mechanic|tech\w*|advisor|rep\w*|agent|"
    r"guy|boss|him|her|yall|operator|staff|service)(?! (?:else|first))",
    r"(?:real|actual|live) (?:person|human)(?!\?)",
    r"(?:can|could|would|will) (?:you|u|someone|somebody|they|yall|anyone|the shop|he|"
    r"she) (?:guys )?(?:please |plz )?(?:just )?(?:call|phone|ring|give me a (?:call|ring|"
    r"buzz))(?: me| us| back)?",
    r"call (?:back|asap|please|my)",
    r"(?:want|need|prefer|rather|like|easier) (?:\w+ )?(?:a )?(?:phone )?call(?! (?:it|you|the|"
    r"off|my))",
    r"(?:over|by|on) the phone",
    r"by phone",
    r"phone call",
    r"(?:reach|get (?:a )?hold of) me (?:at|on|by phone)",
    r"callback",
    r"call me",
    r"(?:talk|speak) (?:to|with) (?:someone|somebody|a human|you (?:guys )?(?:about|first|before|"
    r"on))",
)
_DICE = phrases(
    r"(?:me urge|necesito|quiero) hablar con (?:ustedes|usted|el|la)(?: \w+)?",
    r"(?:ech|d[ae]n?|me d)\w* (?:un |una )?(?:fonazo|telefonazo|llamadita|timbrazo)",
    r"(?:me )?(?:regres|devuelv)\w*(?:me|nme|eme|n)? (?:la )?llamada",
    r"(?:llame|llamen|marque|marquen|hable|hablen)(?:le|nle)? a (?:mi|la|el|este|mi esposa|mi esposo)(?: "
    r"\w+){0,2}",
    r"comuni(?:quen|que|ca)\w*(?:me|nos)? con(?: \w+){0,2}",
    r"con quien (?:puedo|podria|se puede) (?:hablar|platicar)",
    r"ll[ae]m[ae]me",
    r"(?:llam|marqu|marc|habl|telefone)\w*(?:nme|eme|ame|enos|ennos)",
    r"(?:me|nos) (?:puede|pueden|podria|podrian|podrias|puedes|pueda|pudieran|"
    r"pudiera) (?:\w+ )?(?:llamar|marcar|hablar|dar una llamada|telefonear|hacer una llamada)",
    r"(?:puede|pueden|podria|podrian|podrias|puedes) (?:\w+ )?(?:llamarme|marcarme|hablarme|"
    r"llamarnos)",
    r"(?:que|alguien) (?:\w+ )?me (?:llame|llamen|marque|marquen|hable|hablen)",
    r"me (?:llaman?|marcan?|hablan?|llamas|marcas)(?: por favor| cuando|\?| al| a| manana|"
    r" hoy)?(?= |\Z|\?)",
    r"(?:quiero|quisiera|puedo|necesito|prefiero|me gustaria|mejor|prefiriria|"
    r"podria) (?:\w+ )?(?:hablar|platicar|una llamada|comunicarme)(?: (?:con|por))?",
    r"hablar con (?:alguien|una persona|el|la|un|algun)",
    r"por telefono",
    r"una llamada",
    r"persona real(?!\?)",
    r"un humano(?!\?)",
    r"d(?:en|e)me una llamada",
    r"echenme una llamada",
)
_NO_CALL = phrases(
    r"(?:(?:your|yalls|ur|good|bad|close|tough|judgment) call)(?=\Z|[.,!]| on| sorry| man)",
    r"call(?:ing)? (?:it|that|this|things|everything|my \w+|the \w+) off(?: \w+)?",
    r"(?:hablenme|llamenme|marquenme|busquenme) (?:en|dentro de|hasta|pasando|para) (?:\w+ "
    r"){0,3}(?:semanas?|mes|meses|quincena|ano|enero|febrero|marzo|abril|mayo|junio|julio|agosto|"
    r"septiembre|octubre|noviembre|diciembre)",
    r"(?:call|phone|ring) me (?:in|after|next) (?:a |an |the |\d+ |\w+ )*(?:months?|weeks?|year|january|"
    r"february|march|april|may|june|july|august|september|october|november|december|spring|summer|fall|"
    r"winter)",
    r"who do i talk",
    r"(?:dont|do not|please dont|no need to|never|stop|quit|without|instead of|"
    r"not) (?:\w+ )?(?:call\w*|phone|phoning|ring)(?: me| us)?",
    r"(?:ill|i will|i can|ill just|we will|let me|gonna|going to|i may|i need to|have to|i should|"
    r"i) (?:\w+ )?(?:call|phone|ring|give you)(?: (?:you|u|yall|back|in|the shop|a call|later|"
    r"to schedule|when))?",
    r"call it",
    r"(?:trat|atend|dij|cobr|inform|colg|grit|contest|habl)(?:aron|ieron|eron|o|io|aba|aban)(?: \w+){0,3} por telefono",
    r"call(?:ing)? (?:it |my \w+ |the \w+ )?off",
    r"no (?:me )?(?:llamen?|marquen?|hablen?|llames|marques)",
    r"(?:yo )?(?:les|le|te|los) (?:llamo|marco|hablo|llamare|voy a llamar|puedo llamar)",
    r"(?:can|could|should|may) i (?:just )?(?:call|phone)",
    r"(?:are you|is this|is it|am i (?:talking|speaking|texting)|talking|texting) (?:\w+ )?(?:to |"
    r"with )?(?:a )?(?:real |actual |live )?(?:person|human|bot|robot|computer|"
    r"machine)(?: or \w+)*",
    r"(?:is there|anyone) (?:a )?(?:real |actual |live )?(?:person|human)(?: there| here)?\?",
    r"es (?:una )?(?:persona|humano)(?: real)?",
    r"(?:hablo|hablando|estoy hablando) con (?:una |un )?(?:persona|humano|maquina|robot)",
    r"(?:you|u|yall) (?:\w+ )?(?:called|call) me (?:yesterday|last|earlier|twice|already)",
    r"(?:so called|call me (?:crazy|when its (?:done|ready)|when (?:it|the car) is (?:done|ready|"
    r"finished)))",
    r"talk to (?:my|the wife|the husband)",
)


def holds(said: Said) -> bool:
    """Whether a call or a person is asked for."""
    plain = _NO_CALL.sub(" ", said.text)
    return bool(_SAYS.search(plain) or _DICE.search(plain))
