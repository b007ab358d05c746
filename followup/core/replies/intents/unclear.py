"""`unclear`: automatic replies, questions for a machine, other languages, spam: a person reads it."""

from __future__ import annotations

from followup.core.replies.said import Said, phrases

CODE = "unclear"
EXAMPLES: dict[str, tuple[str, ...]] = {
    "en": (
        "asdf", "are you a bot?", "I'm driving with Do Not Disturb turned on", "do you have wifi?",
        "congratulations you have won a gift card click here", "???", "is this a machine", "do u do alignments",
        "whats the wifi", "can u check my ac too", "do you take debit", "🤔", "I'm currently out of the office",
        "is my car ready", "did i leave my sunglasses there", "can my wife bring it", "do you sell used cars",
        "your code is 482913", "bonjour je ne parle pas anglais", "hey did u see the game last night",
        "do u have a bathroom", "can u send me the paperwork", "can i get a copy of my invoice", "are you hiring",
        "Message blocked", "do you guys do oil changes for diesels", "is my car done", "do you rent cars",
        "can i bring my own parts", "do you have a waiting room", "you there?", "do you take cash", "??",
        "are you human", "can you send the invoice", "blah", "do you work on motorcycles",
    ),
    "es": (
        "es usted un robot?", "mensaje automatico: no estoy disponible", "tienen sala de juegos para ninos?", "xd",
        "ganaste un premio, haz clic aqui", "hacen alineaciones?", "hablan ingles?", "aceptan tarjeta",
        "tienen wifi", "puede llevarlo mi hijo?", "venden llantas usadas", "estoy manejando, te escribo luego",
        "que aceite usan?", "olvide mis lentes ahi?", "que", "???", "es una maquina?", "dan credito",
        "su codigo es 4821", "revisan el aire", "estan contratando?", "viste el partido",
        "que marca de llantas manejan", "tienen banos", "me mandan copia de la factura", "trabajan motos?",
        "puedo llevar mis partes", "eres robot", "aceptan efectivo?", "prueba", "ya esta mi carro?", "tienen wifi?",
        "me mandan el recibo?", "arreglan transmisiones?",
    ),
}  # fmt: skip

_AUTOMATIC = phrases(
    r"(?:vacation|away|out of office|holiday|leave) (?:responder|auto ?reply|reply|message|notice|response|"
    r"autoresponder)(?! from)",
    r"^(?:voice (?:message|memo|note)|audio message|voicemail)(?: \d[\d:]*)?\Z",
    r"(?:im|i am) (?:not available|unavailable|away)(?: from| right now| at the moment| now)?(?: "
    r"\w+){0,3}\W+(?:ill|i will|will|please) (?:reply|respond|get back|text|call|leave)(?: \w+){0,3}",
    r"in a meeting\W+(?:can|ill|i will|may) (?:i )?(?:call|text|reply|respond)(?: \w+){0,3}",
    r"do not disturb",
    r"(?:auto|automatic|automated) ?-?(?:reply|response|message|responder|text)",
    r"(?:im|i am) (?:currently )?driving (?:with|right now|and (?:will|cant)|at the moment|so|ill)",
    r"(?:im|i am) driving\Z",
    r"sent from my car",
    r"(?<!sneak )(?<!get )(?<!slip )(?<!step )(?<!duck )(?<!break )(?<!run )(?<!getting )out of (?:the )?office",
    r"(?:will|ill) (?:see|read|reply to|respond to|get back to) your (?:message|text) (?:when|"
    r"as soon|once|later)",
    r"this (?:mailbox|number|inbox) (?:is not|isnt|does not|is no longer) (?:monitored|accept|"
    r"in service|receiv\w+)",
    r"not (?:currently )?monitored",
    r"(?:the )?(?:number|subscriber|customer|person) you (?:are trying|have|dialed|tried|"
    r"re trying)(?: \w+)*",
    r"(?:message|sms|text) (?:blocked|not delivered|failed|undeliverable)",
    r"unable to receive (?:texts?|messages?|sms)",
    r"no longer in service",
    r"error \d+",
    r"cannot receive",
    r"thank you for (?:contacting|calling|texting|your (?:message|text|inquiry))",
    r"thanks for (?:contacting|calling|texting|reaching out to)(?: \w+)*",
    r"i cant talk right now",
    r"in a meeting\W+(?:can|ill|call|will|ill call)?(?: \w+)* (?:text|later)\Z",
    r"whats up\Z",
    r"(?:mensaje|respuesta|contestacion) automatic[oa]",
    r"respondo (?:en cuanto|cuando|mas tarde)",
    r"no molestar",
    r"fuera de (?:la )?oficina",
    r"este (?:buzon|numero) no (?:recibe|esta)(?: \w+)*",
    r"gracias por (?:comunicarse|contactar\w*|llamar|escribir\w*)(?: a| con)",
)
_AT_THE_WHEEL = phrases(
    r"(?<!cuando )(?<!mientras )(?:estoy|voy) (?:manejando|conduciendo)(?= ?(?:\Z|[.,!]|"
    r"y (?:le|te|respond)|te|le|con|ahora|en este))",
)
_PHONE_ME = phrases(r"(?:llam|marqu|habl)\w*(?:nme|eme|ame)")
_MACHINE = phrases(
    r"(?:are|r|is) (?:you|u|this|it|i) (?:\w+ ){0,3}(?:bot|robot|machine|computer|ai|automated|"
    r"real|human|chatbot|a person|an actual)(?: \w+){0,3}",
    r"am i (?:talking|texting|speaking|chatting) (?:to|with) (?:a |an )?(?:\w+ )?(?:bot|robot|"
    r"machine|computer|human|person|ai)",
    r"(?:is there|anyone) (?:a )?(?:real |actual |live )?(?:person|human)(?: there| here)?\?",
    r"(?:bot|robot|real person|human|ai|automated)\?",
    r"(?:es|eres|son) (?:usted )?(?:un |una )?(?:robot|maquina|bot|computadora|persona(?: real)?|"
    r"humano|ia|sistema)",
    r"(?:hablo|estoy hablando|hablando) con (?:una |un )?(?:persona|humano|maquina|robot|bot|"
    r"computadora)",
    r"(?:robot|maquina|bot|persona real)\?",
)
_SPAM = phrases(
    r"(?:stop|swing|run|go) (?:at|by|to|into) the (?:store|grocery|supermarket|market|bakery|pharmacy|"
    r"liquor store) (?:for|and "
    r"(?:get|grab|buy)) (?:some |a |the )?(?:ice|milk|bread|eggs|beer|diapers|chips|charcoal|meat|cake|wine|candy|"
    r"butter|"
    r"coffee|groceries|\w+ and \w+)",
    r"(?:text|call|message|tell|buzz) me when (?:you|u) (?:land|board|take off|get to the (?:airport|hotel|gate))",
    r"what(?: is|s|s cooking| are we having| are we eating| do you want| you want)? for (?:dinner|supper|"
    r"breakfast)(?: tonight)?(?=\W*\Z)",
    r"(?:dinner|supper) is (?:ready|almost ready|in the oven|on the (?:table|stove))(?: \w+)*",
    r"^(?:hey |babe |honey |mom |can you |did you |please )*(?:feed|walk|let out) the (?:dog|cat|dogs|cats|"
    r"baby)\b(?: \w+)*",
    r"^(?:hey |babe |honey |mom |can you |did you |please )*(?:grab|get|pick up|bring) (?:home )?(?:some )?(?:milk|"
    r"bread|eggs|diapers|"
    r"groceries|pizza)\b(?: \w+){0,5}",
    r"^(?:ok|yes|yeah|si|sure|alright|thanks|hi|hey)[ ,]+(?:mom|mama|mommy|dad|daddy|papa|babe|bae|grandma|grandpa|"
    r"abuel[ao])\b(?! .*\b(?:car|truck|brakes?|tires?|oil|shop|appointment|carro|cita|frenos|llantas?)\b)"
    r"(?!.*\d)(?: \w+)*",
    r"see (?:you|u|ya) at home",
    r"(?:ill|i will|im gonna|going to) be home (?:for|by|before|after|around|at|in|soon|late)(?: \w+)*",
    r"love (?:you|u) (?:too|mom|dad|babe|grandma|honey)",
    r"(?:al rato|ya|ahorita|luego) (?:llego|voy|ando) (?:a|para|por) (?:la casa|las tortillas|el mandado|el pan)",
    r"(?:make|earn) \$? ?\d+(?: ?k)? (?:a|per|every) (?:day|week|month)(?: from home)?",
    r"(?:you have|youve|you) won",
    r"congratulations(?: \w+)*",
    r"gift card",
    r"click (?:here|the link|this|below)",
    r"http\w*",
    r"www",
    r"(?:bitcoin|crypto|forex|loan approval|viagra|casino|investment opportunity|(?<!i )(?<!we )(?<!both "
    r")(?<!do )work from home|"
    r"lottery|prize|inheritance|free iphone)",
    r"your (?:package|parcel|account|delivery|order) (?:has|is|was|could|will|number)(?: \w+)*",
    r"verification code",
    r"(?:code|otp) is \d+",
    r"your code",
    r"vote for",
    r"(?:ganaste|ha ganado|has ganado|felicidades|felicitaciones) (?:\w+ )*",
    r"haz clic",
    r"haga clic",
    r"(?:premio|loteria|sorteo|inversion)",
    r"codigo de verificacion",
    r"su paquete",
    r"extended warranty",
    r"sell (?:me )?your (?:house|home)",
    r"(?:buy|interested in selling|cash offer) (?:\w+ )?(?:your )?(?:house|home|property)",
)
_OTHER_TONGUE = phrases(
    r"(?:bonjour|bonsoir|merci|oui|voiture|rendez vous|demain|aujourdhui|je (?:suis|ne|voudrais|"
    r"veux|peux)|cest|sil vous plait|daccord|obrigad[oa]|nao|voce|amanha|hoje|bom dia|boa tarde|"
    r"quero|estou|agora nao|danke|bitte|nein|ich|guten|morgen|heute|nicht|auto ist|termin|grazie|"
    r"prego|buongiorno|domani|ciao|non posso|va bene|vorrei|cam on|xin|khong|toi|anh|dziekuje|nie|"
    r"tak|jutro|spasibo|privet|salamat|kumusta|hindi|opo|bukas|oo|wala|mwen|mesi|pa kapab|demen|"
    r"wi|shukran|xie xie|ni hao|arigato)",
)


def holds(said: Said) -> bool:
    """Whether a person must read it whatever else its words seem to say."""
    return is_automatic(said) or asks_for_machine(said) or is_spam(said)


def is_automatic(said: Said) -> bool:
    """Whether a phone or a mailbox wrote it."""
    is_driving = _AT_THE_WHEEL.search(said.text) and not _PHONE_ME.search(said.text)
    return bool(is_driving or _AUTOMATIC.search(said.text))


def asks_for_machine(said: Said) -> bool:
    """Whether it asks whether a person or a machine writes."""
    return bool(_MACHINE.search(said.text))


def is_spam(said: Said) -> bool:
    """Whether it is an advertisement or a text for somebody else."""
    return bool(_SPAM.search(said.text))


def is_other_tongue(said: Said) -> bool:
    """Whether most of it is in a language that is not read here."""
    words = said.text.split()
    return sum(1 for _ in _OTHER_TONGUE.finditer(said.text)) * 3 >= len(words) and bool(words)
