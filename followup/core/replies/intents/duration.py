"""`duration`: the customer asks how long it takes."""

from __future__ import annotations

from followup.core.replies.said import Said, phrases

CODE = "duration"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "how long does it take", "how long will u need the car", "will it be done same day?", "is it quick?",
        "when would it be ready", "how long it take", "how many hours", "can i get it back same day",
        "all day thing?", "whats the turnaround", "would i have it back by 5", "how long would i be there",
        "is it like an hour or what", "how long for an oil change", "time frame?", "when can i pick it up",
        "will it take long", "how long is the wait usually", "is it gonna be all day", "how fast can you do it",
        "is it a quick job", "ready the same day?", "how much time do u need", "how long u need it for",
        "approx how long", "how long", "how long will that take", "whats the wait", "time it takes?",
        "when will it be done", "could i wait for it or does it take all day", "how long is the appointment",
        "do you finish same day", "how many days", "would it be ready by 5", "how long are we talking",
        "how long does that usually take", "will it take all day", "what time would it be done",
        "how long do i have to wait", "how many hours is that",
    ),
    "es": (
        "cuanto tarda", "cuanto tiempo toma", "queda el mismo dia?", "a que hora estaria listo?", "es rapido?",
        "cuanto se tardan", "como cuanto tiempo", "lo tengo que dejar todo el dia?", "cuantas horas son",
        "cuando lo entregan", "es tardado", "me lo dan el mismo dia", "en cuanto tiempo queda",
        "cuanto dura el servicio", "se tardan mucho?", "para que hora quedaria", "cuanto me tengo que esperar",
        "en un ratito queda?", "cuanto tiempo lo ocupan", "a que hora lo recojo", "cuanto demora",
        "cuantos dias se queda", "lo puedo recoger hoy mismo?", "que tan rapido es", "toma mucho tiempo?",
        "cuanto se tarda", "que tiempo toma", "cuanto tiempo es", "tardan mucho", "a que hora me lo entregan",
        "se hace rapido?", "cuantas horas tardan", "cuanto tiempo se queda el carro", "cuanto tardaria",
        "cuanto tiempo me lo detienen", "sale el mismo dia", "para cuando lo tienen", "cuanto me espero",
        "es cosa de cuanto tiempo",
    ),
}  # fmt: skip

_ASKS = phrases(
    r"(?:am i|will i|would i|are we|will we|ill|am) (?:going to |gonna )?(?:be )?(?:there|stuck there|stuck|sitting "
    r"there|waiting) (?:all|the "
    r"whole|most of the|half the|half a) (?:day|mornin\w*|afternoon|evening)",
    r"is (?:it|that|this) (?:\w+ )?(?:under|over|less than|more than) (?:an?|one|two|three|half an|\d+) (?:hours?|"
    r"hrs?|minutes?|mins?)(?: \w+)?",
    r"(?:does|will|would) (?:it|this|that) (?:\w+ )?(?:run|take|go) (?:over|under|less than|more than|about|like) "
    r"(?:an?|one|two|three|\d+)(?: "
    r"\w+){0,2}",
    r"how long (?:should|do|would) (?:i|we) (?:need to |have to )?(?:plan|set aside|allow|budget|block)(?: \w+)?",
    r"how much of (?:my|the|a|our) (?:day|morning|afternoon|time|week|saturday|evening)(?: \w+){0,5}",
    r"(?:eat|chew|take|use|kill|tie) up (?:my|the) (?:whole |entire )?(?:day|morning|afternoon|saturday|time)(?: "
    r"\w+){0,3}",
    r"^(?:(?:like|about|is it|so|maybe) )*(?:(?:an?|one|two|three|half an?|couple|\d+) (?:hours?|minutes?|mins?|hrs?|"
    r"days?)|hour) ?\?",
    r"(?:can|could|will|would|do) (?:you|u|yall|they|it) (?:guys )?(?:\w+ ){1,3}(?:in|within|inside) (?:under |less "
    r"than |about |like )*"
    r"(?:an?|one|two|half an?|\d+) (?:hours?|minutes?|mins?|hrs?|days?|lunch)",
    r"how much time (?:does|do|will|would) (?:it|this|that|they)(?: \w+)?",
    r"(?:an? )?(?:lunch hour|quick|short|long|all day|half day) (?:kinda |kind of |sort of )?(?:thing|job|deal|"
    r"visit)(?: or)?",
    r"in and out (?:in|within|under)(?: \w+){0,3}",
    r"(?:am i|will i|would i) (?:going to |gonna )?(?:be |get |make it )?(?:out|done|home|finished)(?: of "
    r"(?:there|here))? (?:by|before)(?: \w+)?",
    r"(?:done|finished) (?:in|within|over) (?:a |my )?(?:lunch(?: hour| break)?)",
    r"(?:do|fix|finish|change) it while i wait",
    r"how long do i have to (?:wait|stay|be)",
    r"when (?:can|do|will) i get it back",
    r"cuanto (?:me )?espero",
    r"how(?: is|s) the wait(?: time)?",
    r"(?:done|finished|ready) in (?:an?|one|two|half|under|less than|\d+)(?: \w+){0,2}\?",
    r"(?:what|whats|what is) the wait(?: \w+)?",
    r"time (?:it|that|this) (?:takes?|will take)",
    r"(?:do|will|can|would) (?:you|yall|it|they) (?:\w+ )?(?:finish|be done|get done|be finished)(?: "
    r"\w+)? (?:same|that|in one|the same) day",
    r"se (?:hace|tarda|termina) (?:\w+ )?(?:rapido|mucho|poco)",
    r"(?:can|would|could|will|do) (?:i|we) (?:\w+ )?(?:get|have|be able to get|pick) (?:it|my car|her|the "
    r"car|them) (?:\w+ )?(?:up )?(?:back )?(?:the )?(?:same day|by \w+|today|that day|that afternoon|"
    r"before)",
    r"all day (?:thing|job|deal|affair|event)",
    r"(?:is it|would it be|about|like) (?:like )?(?:an|a|one|two|couple|half) (?:hours?|hrs|day|days)(?: "
    r"\w+){0,3}",
    r"(?:do|will|would) (?:i|you) (?:have|need) to (?:leave|keep) (?:it|my car|the car)(?: \w+){0,3}",
    r"(?:long|quick) (?:wait|job|process)\?",
    r"how many (?:hours|hrs|days|minutes)",
    r"(?:what|wat|when) (?:\w+ )?(?:time )?(?:will|would|can|could|should|do) (?:\w+ ){0,3}(?:ready|done|"
    r"(?<!set me )(?<!set us )(?<!set you )back|finished)",
    r"(?:lo|la) (?:\w+ )?(?:tengo que|hay que|tendria que) dejar(?: \w+){0,3}",
    r"(?:para|como a) que hora(?: \w+)? (?:qued|est|sal|termin|recoj)\w+",
    r"cuanto (?:me )?(?:tengo que|hay que|voy a) esperar",
    r"(?:en un (?:ratito|rato|momento)|el mismo dia|hoy mismo)(?: \w+){0,2}\?",
    r"(?:lo|la) (?:puedo|podria) recoger(?: \w+){0,3}\??",
    r"(?:es|esta|seria) (?:\w+ )?(?:tardad[oa]|rapid[oa])",
    r"how long(?! (?:can|do i have|have i|until i|before i|before it|can i|is it safe|has|ago|"
    r"will (?:they|it|the \w+|my \w+) last|do (?:they|these|tires|brakes) last|does it last|"
    r"till i|would they last|is (?:the|my|that) (?:appointment|offer) ))",
    r"how (?:much|many) (?:time|hours|longer|mins?|minutes|days)(?! (?:do i have|before it))",
    r"(?:same day|while i wait|wait for it|all day|half day|whole day|in and out|quick(?: job|"
    r" fix)?|in an hour|an hour|a long time|long)\?",
    r"(?:will|does|would|is|can|could) (?:it|this|that|they|you|"
    r"the \w+) (?:\w+ ){0,4}(?:take (?:long|all|a (?:while|long)|more|the whole|over)|same day|"
    r"quick|all day|done (?:same|by|in|the same|that|before|today|while)|ready (?:by|same|"
    r"the same|that|before|today)|finished)",
    r"(?:when|what time) (?:will|would|can|could|do|does|should|might|is) (?:it|i|they|my car|"
    r"the car|you|she|this) (?:\w+ )?(?:be )?(?:ready|done|finished|get it back|pick (?:it|"
    r"her) up|have it back|get my car|back|complete\w*)",
    r"(?:is|are) (?:it|this|that) (?:\w+ )?(?:quick|fast|long|an all day|lengthy)",
    r"how (?:quick|fast|soon) (?:can|could|will|would|do) (?:you|it|they|"
    r"yall)(?: guys)? (?:\w+ )?(?:do|finish|get it done|fix|be done|have it (?:done|ready)|turn)",
    r"(?:takes?|taking) long\??",
    r"time ?frame",
    r"turnaround",
    r"cuanto (?!mas me|mas le)(?:\w+ )?(?:tiempo|tard\w+|dura\w*|demor\w+|se (?:tard\w+|demor\w+|llev\w+)|tom\w+|"
    r"dilat\w+|se dilat\w+|"
    r"llev(?!o\b)\w+|rato)(?! (?:puedo|aguant\w+|tengo|antes de|le queda|mas aguanta|puede))",
    r"(?:cuantas horas|cuantos dias|cuantos minutos)",
    r"(?:tarda\w*|demora\w*|toma|lleva) (?:mucho|todo el dia|poco|bastante)",
    r"(?:queda|estaria|estara|esta|lo entregan|lo tienen|sale|me lo dan|"
    r"la tienen) (?:\w+ )?(?:list[oa]|el mismo dia|rapido|"
    r"terminad[oa])(?: \w+)?\??(?<!ya esta listo)",
    r"^(?:el )?mismo dia\Z",
    r"(?:el )?mismo dia ?\?",
    r"(?:queda|quedaria|dan|darian|entregan|entregarian|terminan|acaban|hacen|sale|saldria|regresan) "
    r"(?:\w+ )?(?:el )?mismo dia",
    r"(?:a que hora|para cuando|cuando|que dia) (?:\w+ )?(?:esta|estaria|estara|queda|quedaria|"
    r"terminan|terminarian|recojo|puedo recoger\w*|paso por|lo recojo|sale|saldria|lo tienen|"
    r"me lo entregan|entregan)(?! (?:abiert|cerrad))(?: list[oa])?",
    r"es rapido",
    r"(?:que tan|es muy) (?:rapido|tardado|largo)",
    r"tardado",
)


def holds(said: Said) -> bool:
    """Whether the time it takes is asked for."""
    return bool(_ASKS.search(said.text))
