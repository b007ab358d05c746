"""What customers text, in our own words: a small grammar by what is meant, in English and Spanish.

`{day}`, `{clock}`, `{part}`, `{miles}`, `{number}` are filled in by `phones.py`. What is meant is what a customer means
by it, for a judge; the program has to find that out from the words alone. What a stop or a symptom is put into is what
nobody could take for anything else: whether such texts are understood in any words is measured elsewhere.
"""

from __future__ import annotations

ENGLISH: dict[str, tuple[str, ...]] = {
    "yes_time": (
        "yes, {day} {clock} works", "can i come {day} at {clock}?", "{day} {part} would be good", "ok {day} then",
        "sure. {day} around {clock}", "how about {day} {part}", "i could do {day} or the day after, {part}",
        "yes please, anything {part} on {day}", "{day} after {clock}", "put me down for {day} {clock}",
        "{day} {part} and i'd wait for it", "{day} ok? need a ride though",
    ),
    "yes": ("yes", "yes please", "sure", "ok lets do it", "yep sounds good", "go ahead"),
    "no": ("no thanks", "not now", "no", "nah im good", "no thank you, not at the moment"),
    "later": ("maybe next month", "ask me again in january", "not this month, later", "after the holidays please"),
    "done": ("already had that done last week", "got it done elsewhere", "my brother did it on the weekend"),
    "price": ("how much is it?", "what would that cost", "whats the price for that", "how much would i pay"),
    "duration": ("how long does it take?", "how long would you need the car", "is that a long job?"),
    "explain": ("what does that mean?", "why is that needed", "what is that part for"),
    "judgment": ("is it safe to drive till then?", "can it wait until spring?", "could i still do a long trip with it"),
    "call": ("please call me", "can someone call me about it", "call me back when you can"),
    "where": ("where are you exactly?", "what are your hours", "are you open on saturday?"),
    "odometer": ("{miles}", "its at {miles}", "{miles} miles", "about {miles}", "odometer says {miles}"),
    "slot": ("{number}", "the {number}. one", "number {number} please", "{number} works"),
    "other_slot": ("none of those, {day} {part}?", "cant then. {day}?", "anything on {day}"),
    "confirm": ("yes", "yes see you then", "yep still good", "confirmed, thanks"),
    "move": ("CHANGE", "something came up, can we do {day} instead", "can we make it {day} {part}?"),
    "cancel": ("i have to cancel", "please cancel my appointment", "cant make it, cancel it please"),
    "late": ("running 20 minutes late", "stuck in traffic, be there 15 min late"),
    "fine": ("yes all good thanks", "everything was fine", "all good, thank you"),
    "complaint": (
        "not happy, there is a scratch on the door", "you left grease on my seat and i am not pleased",
        "i was charged twice and nobody called me back. im disappointed",
    ),
    "thanks": ("thanks", "ok thank you", "great", "👍", "thx!"),
    "walk_in": ("ok ill come by", "thanks, will stop by tomorrow", "great, coming by this week"),
    "stop": ("STOP", "stop", "Stop", "stop texting me", "please stop texting me", "take me off your list",
             "unsubscribe", "do not text me again"),
    "start": ("START", "start"),
    "help": ("HELP", "help"),
    "stranger": ("wrong number", "you have the wrong number, i dont own that car"),
    "gone": ("i sold that car", "we traded it in last month, dont have it anymore"),
    "yes_stop": ("yes", "YES", "yes stop all of them"),
    "no_stop": ("no", "NO", "no, keep them"),
    "symptom_now": (
        "my brakes failed this morning", "the brake pedal goes to the floor", "there is smoke coming from the hood",
        "steering just went stiff and i can barely turn", "i smell gas inside the car",
        "the front wheel is wobbling badly", "the red oil light came on", "engine is overheating",
    ),
    "symptom_today": (
        "the brakes are squealing every time i stop", "check engine light is on", "it pulls to the right when i brake",
        "there is a grinding noise from the front", "it is leaking something under the car",
        "the car shakes at highway speed",
    ),
}  # fmt: skip

SPANISH: dict[str, tuple[str, ...]] = {
    "yes_time": (
        "si, el {day} a las {clock}", "puedo ir el {day} a las {clock}?", "el {day} {part} me queda bien",
        "ok el {day}", "claro, el {day} como a las {clock}", "que tal el {day} {part}",
        "el {day} despues de las {clock}", "apunteme para el {day} a las {clock}", "el {day} {part} y espero ahi",
    ),
    "yes": ("si", "sí por favor", "claro", "ok, hagamoslo", "si esta bien"),
    "no": ("no gracias", "ahora no", "no", "por ahora no, gracias"),
    "later": ("mejor el proximo mes", "pregunteme en enero", "mas adelante", "despues de las fiestas"),
    "done": ("ya lo hice la semana pasada", "ya me lo cambiaron en otro taller"),
    "price": ("cuanto cuesta?", "que precio tiene", "cuánto me sale"),
    "duration": ("cuanto tarda?", "cuanto tiempo lleva"),
    "explain": ("que significa eso?", "para que sirve eso", "por que hace falta"),
    "judgment": ("es seguro manejar asi?", "puede esperar hasta la primavera?"),
    "call": ("llámeme por favor", "me pueden llamar?", "que alguien me llame"),
    "where": ("donde estan?", "cual es su horario?", "abren el sabado?"),
    "odometer": ("{miles}", "tiene {miles}", "{miles} millas", "como {miles}"),
    "slot": ("{number}", "el {number}", "la opcion {number}"),
    "other_slot": ("ninguno, el {day} {part}?", "no puedo, el {day}?"),
    "confirm": ("si", "si, ahi estare", "confirmado, gracias"),
    "move": ("CAMBIAR", "no puedo ese dia, puede ser el {day}?", "podemos cambiarlo al {day} {part}?"),
    "cancel": ("tengo que cancelar", "cancele mi cita por favor"),
    "late": ("voy 20 minutos tarde", "llego 15 minutos tarde"),
    "fine": ("si todo bien gracias", "todo bien"),
    "complaint": ("no estoy contento, me rayaron la puerta", "me cobraron dos veces y nadie me llama"),
    "thanks": ("gracias", "ok gracias", "muy bien", "👍"),
    "walk_in": ("ok paso por ahi", "gracias, paso mañana"),
    "stop": ("STOP", "ALTO", "no me manden mas mensajes", "ya no me escriban", "parar"),
    "start": ("START", "start"),
    "help": ("AYUDA", "HELP"),
    "stranger": ("numero equivocado", "se equivocó de numero"),
    "gone": ("ya vendí ese carro", "ya no tengo ese carro, lo vendi"),
    "yes_stop": ("si", "SI"),
    "no_stop": ("no", "NO"),
    "symptom_now": (
        "me fallaron los frenos", "el pedal del freno se va hasta el fondo", "sale humo del motor",
        "huele a gasolina dentro del carro", "se prendio la luz roja del aceite", "el motor se sobrecalienta",
    ),
    "symptom_today": (
        "los frenos rechinan cada vez que freno", "se prendio la luz del motor", "esta goteando algo debajo del carro",
        "hace un ruido raro adelante", "el carro vibra en la carretera",
    ),
}  # fmt: skip
SAYINGS = {"en": ENGLISH, "es": SPANISH}

DAYS = {
    "en": ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "tomorrow", "next tuesday", "mon"),
    "es": ("lunes", "martes", "miercoles", "jueves", "viernes", "sábado", "proximo martes"),
}  # fmt: skip
PARTS = {
    "en": ("in the morning", "morning", "in the afternoon", "afternoon", "before noon", "after lunch"),
    "es": ("por la mañana", "en la tarde", "por la tarde", "temprano"),
}
CLOCKS = {
    "en": ("9", "9am", "10:30", "8", "2pm", "3:30 pm", "noon", "11ish", "half past 9"),
    "es": ("9", "10 de la mañana", "3 de la tarde", "8:30", "2", "11"),
}
# What phones and thumbs do with words.
SHORTENED = {
    "you": "u",
    "please": "pls",
    "tomorrow": "tmrw",
    "thanks": "thx",
    "are": "r",
    "por favor": "x fa",
    "que": "q",
}
BEFORE = {"en": ("hi, ", "hey ", "hello. ", "good morning, "), "es": ("hola, ", "buenas, ", "buenos dias, ")}
AFTER = {"en": (" thanks", " 🙂", "!!", " - sent from my phone"), "es": (" gracias", " 🙂", "!!")}
