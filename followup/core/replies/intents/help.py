"""`help`: the customer asks who this is or how to stop."""

from __future__ import annotations

from followup.core.replies import stop_grammar
from followup.core.replies.said import Said, phrases
from followup.core.replies.words.entry import word_set

CODE = "help"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "HELP", "who is this", "who dis?", "how did u get my number", "how do i stop these", "INFO", "whos this",
        "which shop is this", "who r u", "what company is this", "where did you get my info", "what number is this",
        "who am i talking to", "is this legit", "help", "how do i unsubscribe", "may i ask whos texting",
        "sorry who is this", "who sent this", "is this really the shop", "how do i get off this list",
        "what is this about?", "do i know you?", "who are you guys", "what place is this", "who are you",
        "who's texting", "what is this number", "how did you get this number", "info please", "what company",
        "whose number is this", "how can i opt out of this", "who is texting me", "who are u",
        "whos number is this", "what is this about", "who gave you this number", "is this a scam",
        "how do i turn these off", "identify yourself please", "wait who", "what company is this from",
        "sorry dont have this number saved who is it",
    ),
    "es": (
        "AYUDA", "quien es?", "quienes son ustedes", "de donde sacaron mi numero", "como cancelo estos mensajes",
        "quien habla", "kien es", "de que taller son", "de parte de quien", "con quien hablo",
        "como consiguieron mi telefono", "info", "quien me escribe", "que empresa es", "disculpe quien es",
        "quien eres", "como hago para que no me manden", "de donde me escriben", "como me salgo de la lista",
        "es en serio este mensaje? quien es", "que numero es este", "de donde son", "y ustedes quienes son",
        "informacion", "quien manda esto", "ayuda", "quien eres tu", "quien manda este mensaje",
        "de donde es este numero", "quien me texteo", "de que compania", "como obtuvieron mi numero",
        "como dejo de recibir estos", "quien es usted", "quien me manda esto", "de quien es este numero",
        "no tengo guardado este numero quien es", "como le hago para no recibir esto", "es fraude esto?",
        "de que negocio es",
    ),
}  # fmt: skip

KEYWORDS = word_set(
    "help info ayuda informacion aide helpme",
) | {"help me", "need help", "more info", "quien es", "who", "quien", "information", "help help", "commands", "menu"}
_ASKS = phrases(
    r"(?:what|which) (?:outfit|business|company|garage|shop|place|person|one of you) (?:is|are|keeps) (?:texting|"
    r"messaging|"
    r"writing|contacting|sending)(?: \w+){0,3}",
    r"(?:what|which) (?:outfit|business|company|garage|shop|place) is (?:this|it|that)",
    r"is this for real",
    r"(?:wait )?who\Z",
    r"es (?:un )?fraude(?: esto)?\?",
    r"remind me (?:again )?who(?: \w+){0,3}",
    r"who wants to know",
    r"quien (?:pregunta|quiere saber)",
    r"como (?:le hago )?(?:para )?(?:puedo )?(?:dejo|dejar|paro) de (?:recibir|que me)(?: \w+){0,3}",
    r"who (?:gave|told) (?:you|u|yall) (?:guys )?(?:\w+ )?(?:number|info|name)?",
    r"(?:which|what) (?:\w+ )?(?:shop|garage|company|business|place|mechanic|dealer\w*)(?: \w+)? (?:is|"
    r"are|r) (?:this|that|you|it)",
    r"(?:which|what) (?:shop|garage|company|business)\?",
    r"and you are\?",
    r"who(?: is|s)? (?:texting|messaging|sending|writing)",
    r"^name\?",
    r"como (?:le )?(?:\w+ )?(?:hago|hacer|hacerle) (?:para )?(?:que )?(?:ya )?no (?:me )?(?:\w+ )?(?:mand|"
    r"envi|escrib|molest|lleg)\w*",
    r"(?:de )?(?:que|cual) (?:taller|empresa|compania|negocio|lugar|numero|agencia) (?:son|es|me|escriben|"
    r"hablan|mandan)",
    r"(?:de parte|a nombre) de quien",
    r"de donde (?:me |nos )?(?:son|escriben|hablan|mandan|textean|eres|es)(?= ustedes|\Z|[.,?])",
    r"me puede decir quien",
    r"como me salgo",
    r"who (?:is|are|r|dis|the|was|this|exactly|am i|sent|do|may i|be)(?! (?:doing|working|"
    r"my (?:mechanic|tech\w*|advisor)|going to|able|available|fixing|the (?:mechanic|tech\w*)|"
    r"that did))",
    r"^(?:new phone )?who\Z",
    r"who\?",
    r"whos (?:this|dis)",
    r"(?:how|where) (?:did|do|d|didyou) (?:you|u|yall|ya) (?:guys |all |people )?(?:get|have|find|"
    r"got) (?:my|this|our) (?:\w+ )?(?:number|info|phone|cell|contact|name)",
    r"how (?:do|can|would|to|does one)(?: i| we)? (?:\w+ )?(?:stop|unsubscribe|opt out|get off|"
    r"turn (?:off|these)|cancel (?:these|texts|the texts)|end (?:these|the)|make (?:this|these|"
    r"it) stop|quit|block)",
    r"what (?:company|shop|business|garage|place|number|organization|dealer\w*) (?:is this|"
    r"are you|is it|r u|you with|is texting|this is|from)",
    r"(?:is|who is) this (?:from |the |for |really )?(?:\w+ )?(?:shop|garage|legit|real|spam|"
    r"a scam|mechanic|dealer\w*|place)\??",
    r"do i know you",
    r"identify yourself",
    r"why do you have my number",
    r"what is this (?:number|about|text|regarding|message|for)?\?",
    r"^what is this\Z",
    r"(?:is this|are you) legit",
    r"(?<!tengo )(?<!hay )(?<!busco )quien(?:es)? (?:es|son|eres|habla|escribe|me|manda|sos|llama|"
    r"envia|esta|chingados|demonios|"
    r"rayos)",
    r"quien\?",
    r"^quien\Z",
    r"con quien (?:hablo|tengo el gusto|estoy|me comunico)",
    r"(?:de )?(?:donde|como) (?:sacaron|consiguieron|obtuvieron|tienen|tiene|consiguio|saco|"
    r"obtuvo) (?:mi|este) (?:numero|telefono|contacto|informacion|celular)",
    r"como (?:le hago para |puedo |hago para |se |me |los |puedo )?(?:cancel\w*|par\w+|deten\w+|"
    r"dejar de|quit\w+|dar de baja|doy de baja|detengo|desactiv\w+|salgo|salir)(?: (?:los|estos|"
    r"de|sus|el|la|esto|mensajes)\b)?",
    r"(?:que|cual) (?:compania|empresa|taller|negocio|numero) (?:es|son)",
    r"(?:de parte|de) (?:de )?quien",
    r"(?:es|son) (?:de )?(?:el|la|un|una) (?:taller|agencia|estafa)\?",
    r"de que (?:taller|compania|empresa|negocio)(?: \w+)?",
)
_NO_QUESTION = phrases(
    r"(?:dont|do not|not sure|no idea|idk) (?:\w+ )?who(?: \w+)*",
    r"no se (?:ni )?quien(?:es)?(?: \w+)*",
    r"como (?:cancelo|cambio|muevo) (?:mi|la) (?:cita|hora)",
    r"(?:know|is there|someone) (?:\w+ )?who",
    r"how (?:do|can) i cancel (?:my|the|this) (?:appointment|booking|visit)",
    r"the one who",
    r"my \w+ who",
)


def holds(said: Said) -> bool:
    """Whether it asks who we are or how to stop."""
    if any(one in KEYWORDS for one in said.bare):
        return True
    plain = _NO_QUESTION.sub(" ", said.text)
    return bool(_ASKS.search(plain)) or stop_grammar.asks_how_to_stop(plain)
