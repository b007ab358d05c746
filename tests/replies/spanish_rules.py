"""Spanish replies of our own for the rules of grammar that read them: (context, text, meanings, what else they hold).

Keys and contexts as in `contract_cases.py`.
"""

from __future__ import annotations

from tests.replies.contract_cases import Case

TIMES: list[Case] = [
    # an if and a polite question rule nothing out
    ("visit", "el martes a las 10, si no el jueves a las 2", "propose", {"t": ["3-10 10:00", "3-5 14:00"]}),
    ("time", "a las ocho o si no a las 3", "propose", {"t": ["3-5 08:00", "3-5 15:00"]}),
    ("slot", "no habra algo para el sabado?", "propose", {"t": ["3-7"]}),
    ("visit", "no podrian el lunes en la tarde?", "propose", {"t": ["3-9 12:00-17:00"]}),
    ("visit", "el lunes no puedo, el martes?", "propose", {"t": ["3-10"], "a": ["3-9"]}),
    ("visit", "el proximo jueves, si dios quiere", "propose", {"t": ["3-5"]}),
    ("visit", "si se puede el viernes", "propose", {"t": ["3-6"]}),
    ("visit", "si, el viernes", "accept propose", {"t": ["3-6"]}),
    ("visit", "de una, el sabado a las 9", "accept propose", {"t": ["3-7 09:00"]}),
    ("visit", "arre, el lunes temprano y ahi espero", "accept propose", {"t": ["3-9 07:30-12:00"], "needs": ["wait"]}),
    # weeks and dates
    ("day", "martes o jueves de la semana que viene", "propose", {"t": ["3-10", "3-12"]}),
    ("day", "thursday or friday of next week", "propose", {"t": ["3-12", "3-13"]}),
    ("day", "la otra semana, el jueves 12", "propose", {"t": ["3-12"]}),
    ("day", "de hoy en dos semanas a las 9", "propose", {"t": ["3-18 09:00"]}),
    ("day", "el 34 de abril", "propose", {"q": "day"}),
    ("visit", "anoteme para el 31 de junio", "propose", {"q": "day"}),
    ("visit", "pasadas las fiestas de fin de año", "later", {"un": "2027-01-02"}),
    # what is told for something else, or compared with
    ("time", "a las 9 porque a las 4 lo ocupo", "propose", {"t": ["3-5 09:00"]}),
    ("day", "el lunes seria mejor que el martes", "propose", {"t": ["3-9"]}),
    ("day", "el sabado, es mi unico dia de descanso", "propose", {"t": ["3-7"]}),
    ("booked", "cuanto sale lo del jueves", "price", {}),
    ("after_visit", "si, todo bien, me lo entregaron el martes a las 3", "accept", {}),
    ("today", "voy tarde, llego a las diez y media", "running_late", {"t": ["3-4 10:30"]}),
    # an hour that cannot be told, any of that day, a number that is its own clause, one put right
    ("time", "despues de llevar a mi hijo a la escuela", "propose", {"t": ["3-5"]}),
    ("time", "once i drop my daughter off at school", "propose", {"t": ["3-5"]}),
    ("time", "a cualquier hora de ese dia", "propose", {"t": ["3-5"]}),
    ("time", "once, y de ahi me tienen que llevar al trabajo", "propose", {"t": ["3-5 11:00"], "needs": ["ride"]}),
    ("time", "8 no perdon 10", "propose", {"t": ["3-5 10:00"]}),
    ("time", "tipo 2 y media", "propose", {"t": ["3-5 14:00-15:00"]}),
    # all but one
    ("day", "todos menos el viernes", "propose", {"a": ["3-6"]}),
    ("day", "el jueves no puedo, cualquier otro dia", "propose", {"a": ["3-5"]}),
    ("visit", "si, cuando haya lugar", "accept propose", {}),
]

OFFERS: list[Case] = [
    ("three", "el tercero no puedo", "decline", {"a": ["3-9 10:30"], "q": "slot"}),
    ("slot", "la mas pronto", "choose", {"t": ["3-5 09:00"], "ch": "2026-03-05T09:00"}),
    ("three", "la que sigue despues del jueves", "choose", {"t": ["3-6 14:00"], "ch": "2026-03-06T14:00"}),
    ("one slot", "mejor el lunes a la misma hora", "propose", {"t": ["3-9 09:00"]}),
    ("one slot", "friday at the same time would be better", "propose", {"t": ["3-6 09:00"]}),
    ("same day", "ocho, ocupo un carrito prestado", "choose",
     {"t": ["3-5 08:00"], "ch": "2026-03-05T08:00", "needs": ["loaner"]}),
    ("one slot", "dale, nomas que me lleven a la casa despues", "choose",
     {"t": ["3-5 09:00"], "ch": "2026-03-05T09:00", "needs": ["ride"]}),
    ("slot", "jueves, aceptan pagos en abonos?", "choose unclear",
     {"t": ["3-5 09:00"], "ch": "2026-03-05T09:00"}),
    ("slot", "la 2, cuanto llevo de efectivo", "choose price", {"t": ["3-6 14:00"], "ch": "2026-03-06T14:00"}),
    ("confirm", "el mismo dia pero por la tarde", "move", {"t": ["3-5 12:00-17:00"]}),
]  # fmt: skip

MEANINGS: list[Case] = [
    # when to ask again
    ("visit", "buscame otra vez el martes", "later", {"un": "2026-03-10"}),
    ("visit", "me depositan el 15, recuerdeme ese dia", "later", {"un": "2026-03-15"}),
    ("visit", "cobro el sabado, hasta entonces no tengo", "later", {"un": "2026-03-07"}),
    ("visit", "mejor me avisas en el otono", "later", {"un": "2026-09-01"}),
    ("day", "vuelvo de viaje el 20", "later", {"un": "2026-03-20"}),
    ("day", "me dan mi horario el viernes, escribanme ese dia", "later", {"un": "2026-03-06"}),
    ("known", "aviseme a las 50 mil millas", "later", {"un": "2026-06-02"}),
    ("confirm", "cancelen la cita, salgo de viaje. escribanme en abril", "cancel later", {"un": "2026-04-01"}),
    # readings
    ("odometer", "cuarenta y ocho mil trescientos cincuenta y dos", "odometer", {"od": 48352}),
    ("odometer", "48 mil 40", "odometer", {"od": 48040}),
    ("odometer", "48 mil 300, no no, 48200", "odometer", {"od": 48200}),
    ("known", "48.3k, el lunes a las 9 puedo", "propose odometer", {"t": ["3-9 09:00"], "od": 48300}),
    ("known", "anda ya como en 48 mil", "odometer", {"od": 48000}),
    ("odometer", "marca 48310 pero ya me lo hicieron en otro taller", "done odometer", {"od": 48310}),
    ("odometer", "no se los voy a decir", "decline", {}),
    # who is unhappy, who wants to be phoned
    ("visit", "ya me lo hizo mi primo porque ustedes me dejaron plantada", "done complaint", {}),
    ("visit", "la cuenta venia mal. marquenme", "complaint call", {}),
    ("booked", "cancelen mi cita, me atendieron muy feo por telefono", "cancel complaint", {}),
    ("after_visit", "si todo bien, pero me cobraron una hora de mas", "accept complaint", {}),
    ("after_visit", "no me quejo", "accept", {}),
    ("visit", "estoy manejando, llameme al rato", "call", {}),
    ("visit", "estoy manejando", "unclear", {}),
    ("visit", "marqueme y ahi le explico", "call", {}),
    # questions and answers
    ("walk_in", "hasta que hora estan el sabado?", "where", {}),
    ("visit", "no enciende desde anoche, aceptan tarjeta de credito?", "symptom unclear", {}),
    ("visit", "que no, ya lo hice en otro lado", "done decline", {}),
    ("today", "si, ya mero llego", "accept", {}),
    ("confirm_stop", "nooo fue un error", "decline", {}),
    ("confirm_stop", "hombre no, si me sirven", "decline", {}),
    ("confirm_stop", "si, ya no quiero nada", "stop", {}),
    (
        "car",
        "la camioneta, el viernes a las 9 se la llevo",
        "accept propose",
        {"t": ["3-6 09:00"], "car": "white truck"},
    ),
]

SAID: list[Case] = [
    # verbs with what hangs on them, called off or moved
    ("booked", "anulela por favor", "cancel", {}),
    ("booked", "liberen mi turno", "cancel", {}),
    ("confirm", "borreme del dia de mañana", "cancel", {}),
    ("confirm", "no cuenten conmigo", "cancel", {}),
    ("booked", "posponganla", "move", {"q": "day"}),
    ("booked", "recorranla al lunes", "move", {"t": ["3-9"]}),
    ("booked", "pasemela pal sabado", "move", {"t": ["3-7"]}),
    ("confirm", "hay que cambiarla", "move", {"q": "day"}),
    ("confirm", "no hace falta moverla, ahi estare", "accept", {}),
    ("confirm", "no la voy a cancelar", "accept", {}),
    ("confirm", "seguimos en pie", "accept", {}),
    # by ear, and a letter too many
    ("day", "el biernes", "propose", {"t": ["3-6"]}),
    ("day", "el savado tempranito", "propose", {"t": ["3-7 08:00-12:00"]}),
    ("day", "el luness", "propose", {"t": ["3-9"]}),
    ("time", "a las onse", "propose", {"t": ["3-5 11:00"]}),
    ("visit", "esta muy caro", "decline", {}),
    # what is past, what is no time
    ("visit", "me lo cambiaron el mes pasado en otro taller", "done", {}),
    ("day", "este fin", "propose", {"t": ["3-7"]}),
    ("time", "la ultima del dia", "propose", {"t": ["3-5 17:00-18:00"]}),
    ("day", "me da igual el dia", "propose", {}),
    # a yes beside what is no later, an if that is no yes, politeness that is none
    ("visit", "me parece bien, la otra semana el martes", "accept propose", {"t": ["3-10"]}),
    ("visit", "con mucho gusto, el viernes", "accept propose", {"t": ["3-6"]}),
    ("visit", "el jueves, si trabajan", "propose", {"t": ["3-5"]}),
    ("visit", "si lo traigo a que hora queda", "duration", {}),
    ("visit", "no, y a que hora cierran?", "decline where", {}),
    ("after_visit", "sin queja alguna", "accept", {}),
    ("after_visit", "de lujo", "accept", {}),
    ("visit", "gracias por nada", "complaint", {}),
    ("today", "esperenme tantito", "running_late", {}),
    ("car", "los 2", "accept", {}),
    ("car", "el azulito", "accept", {"car": "blue sedan"}),
    ("nothing", "ya pueden volver a textearme", "resume", {}),
    ("visit", "ok you can text me again", "resume", {}),
    # a bare reading, one beside what is done, one written for the file
    ("nothing", "51890", "odometer", {"od": 51890}),
    ("odometer", "48,310, el aceite se lo cambie ayer", "done odometer", {"od": 48310}),
    ("nothing", "para su archivo: 48,900 esta mañana", "odometer", {"od": 48900}),
    ("day", "lo mas prontito", "propose", {}),
    ("slot", "la mas tempranito", "choose", {"t": ["3-5 09:00"], "ch": "2026-03-05T09:00"}),
    ("visit", "marquenme y quedamos pa el lunes", "propose call", {"t": ["3-9"]}),
    ("visit", "le hablo de parte de mi mama, puede el lunes", "propose", {"t": ["3-9"]}),
    ("today", "llevo 30 minutos esperando y nadie me atiende", "complaint", {}),
]
