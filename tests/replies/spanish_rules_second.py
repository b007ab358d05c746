"""More Spanish replies of our own for rules of grammar, in the form of `spanish_rules.py`."""

from __future__ import annotations

from tests.replies.contract_cases import Case

FIRST, SECOND = "2026-03-05T09:00", "2026-03-06T14:00"

TIMES: list[Case] = [
    # days that are cut short, an s that is not said, the other Thursday
    ("nothing", "vie 1015", "propose", {"t": ["3-6 10:15"]}),
    ("visit", "lun 9 tempra", "propose", {"t": ["3-9 07:30-12:00"]}),
    ("visit", "mierc 11 a las 8", "propose", {"t": ["3-11 08:00"]}),
    ("visit", "pa'l lune a la do y media", "propose", {"t": ["3-9 14:30"]}),
    ("day", "el vierne a la tre", "propose", {"t": ["3-6 15:00"]}),
    ("visit", "el jueve depue de la do", "propose", {"t": ["3-5 14:00-18:00"]}),
    ("day", "pal marte", "propose", {"t": ["3-10"]}),
    ("visit", "el otro jueves", "propose", {"t": ["3-12"]}),
    ("confirm", "me la cambian pal otro jueves", "move", {"t": ["3-12"]}),
    ("visit", "el otro lunes en la tarde", "propose", {"t": ["3-9 12:00-17:00"]}),
    ("visit", "de 3 pa lante el viernes", "propose", {"t": ["3-6 15:00-18:00"]}),
    ("time", "de las 2 pa delante", "propose", {"t": ["3-5 14:00-18:00"]}),
    ("visit", "puedo el lunes pero ya tardeando", "propose", {"t": ["3-9 15:00-18:00"]}),
    ("visit", "pasado mañana nomas abran", "propose", {"t": ["3-6 07:30-08:30"]}),
    ("day", "ma;ana", "propose", {"t": ["3-5"]}),
    ("day", "el lunes en la ma~ana", "propose", {"t": ["3-9 07:30-12:00"]}),
    # asked politely without its mark, and ruled out
    ("slot", "no tendra algo el sabado", "propose", {"t": ["3-7"]}),
    ("visit", "hola no podran el lunes", "propose", {"t": ["3-9"]}),
    ("visit", "el lunes no, el martes tampoco, el miercoles si", "propose", {"t": ["3-11"], "a": ["3-9", "3-10"]}),
    # put right in the same breath
    ("visit", "jueves, bueno no, viernes a las 11", "propose", {"t": ["3-6 11:00"]}),
    ("visit", "el lunes, ay no, el martes", "propose", {"t": ["3-10"]}),
    ("visit", "el lunes, pero no el martes", "propose", {"t": ["3-9"], "a": ["3-10"]}),
    # both, each, none of the hours
    (
        "visit",
        "el 17 o si no el 19 los dos despues de las 2",
        "propose",
        {"t": ["3-17 14:00-18:00", "3-19 14:00-18:00"]},
    ),
    ("visit", "el lunes a las dos", "propose", {"t": ["3-9 14:00"]}),
    # told for something else
    ("visit", "me queda el sabado nomas, salgo de la obra los demas dias ya de noche", "propose", {"t": ["3-7"]}),
    ("visit", "el martes a las 10, los niños salen a las 3", "propose", {"t": ["3-10 10:00"]}),
    ("visit", "dos horas me tuvieron ahi la ultima vez", "complaint", {}),
    ("visit", "me hicieron esperar tres horas", "complaint", {}),
    (
        "visit",
        "les dejo la llave el domingo en la noche en el buzon pa el lunes",
        "propose",
        {"t": ["3-9"], "needs": ["early_drop"]},
    ),
    (
        "visit",
        "el martes, lo dejo desde las 6 en la cajita de llaves",
        "propose",
        {"t": ["3-10"], "needs": ["early_drop"]},
    ),
    ("visit", "el domingo en la noche", "propose", {"t": ["3-8 closed"], "q": "day"}),
    ("visit", "para el otoño nos vendria mejor", "later", {"un": "2026-09-01"}),
    ("visit", "pal verano", "later", {"un": "2026-06-01"}),
    # a trouble of the car beside the visit
    ("visit", "rechina feo al frenar me lo puedes ver el viernes a las 9", "symptom propose", {"t": ["3-6 09:00"]}),
    ("visit", "se jalonea, pueden checarlo mañana", "symptom propose", {"t": ["3-5"]}),
    ("visit", "el viernes rechinaba al frenar", "symptom", {}),
]
OFFERS: list[Case] = [
    ("one slot", "ta tempranisimo jaja", "decline", {"q": "time"}),
    ("one slot", "se me hace bien temprano", "decline", {"q": "time"}),
    ("one slot", "esta tardisimo pa mi", "decline", {"q": "time"}),
    ("same day", "bien temprano mejor", "choose", {"t": ["3-5 08:00"], "ch": "2026-03-05T08:00"}),
    ("same day", "la tempranera", "choose", {"t": ["3-5 08:00"], "ch": "2026-03-05T08:00"}),
    ("same day", "la temprano porfa", "choose", {"t": ["3-5 08:00"], "ch": "2026-03-05T08:00"}),
    ("same day", "cualquiera, tengo libres las dos", "choose", {"t": ["3-5 08:00", "3-5 15:30"]}),
    ("same day", "estan disponibles las dos", "choose", {"t": ["3-5 08:00", "3-5 15:30"]}),
    ("slot", "cualkiera de las 2", "choose", {"t": ["3-5 09:00", "3-6 14:00"]}),
    ("slot", "a las 2", "choose", {"t": ["3-6 14:00"], "ch": SECOND}),
    ("same day", "la mas tarde, la escuela sale a las 3", "choose", {"t": ["3-5 15:30"], "ch": "2026-03-05T15:30"}),
    ("three", "la primera o la tercera, da igual cual", "choose", {"t": ["3-5 09:00", "3-9 10:30"]}),
    ("slot", "da lo mismo", "choose", {"t": ["3-5 09:00", "3-6 14:00"]}),
    ("slot", "mañana ni de chiste", "decline", {"a": ["3-5 09:00"], "q": "slot"}),
    ("slot", "el jueves no puedo", "decline", {"a": ["3-5 09:00"], "q": "slot"}),
    ("slot", "no puedo", "decline", {"q": "day"}),
    ("slot", "el viernes ni loco", "decline", {"a": ["3-6 14:00"], "q": "slot"}),
    ("one slot", "y cuanto cobran primero", "price", {}),
    ("slot", "la primera, cuanto es", "choose price", {"t": ["3-5 09:00"], "ch": FIRST}),
]
MEANINGS: list[Case] = [
    # said as in Spain
    ("visit", "no, pero por curiosidad que cobrais por los limpias?", "decline price", {}),
    ("visit", "a que hora abris los sabados?", "where", {}),
    ("visit", "podeis llamarme esta tarde?", "call", {}),
    ("visit", "quien sois", "help", {}),
    ("visit", "llamadme por favor", "call", {}),
    ("visit", "ya me lo hicisteis el mes pasado", "done", {}),
    ("visit", "en vuestro taller no puedo mañana, el lunes si", "propose", {"t": ["3-9"], "a": ["3-5"]}),
    ("visit", "vale, cogedme el lunes a las 10", "accept propose", {"t": ["3-9 10:00"]}),
    # no
    ("visit", "que va", "decline", {}),
    ("visit", "ni de broma", "decline", {}),
    ("visit", "ni en sueños", "decline", {}),
    ("visit", "ahorita mi primo me lo ve, gracias", "decline", {}),
    ("visit", "mi cuñado me lo va a arreglar", "decline", {}),
    ("visit", "mi primo se los lleva el martes", "propose", {"t": ["3-10"]}),
    ("visit", "ya no me pregunten de la bateria nunca, lo demas si", "decline", {"q": "confirm_stop"}),
    ("visit", "ya no me ofrezcan lo del aceite", "decline", {"q": "confirm_stop"}),
    ("visit", "nunca les voy a hacer nada a ese carro", "decline", {"q": "confirm_stop"}),
    ("visit", "quitenme los mensajes de la bateria, los demas dejelos", "decline", {"q": "confirm_stop"}),
    ("visit", "de los frenos ya no me manden nada", "decline", {"q": "confirm_stop"}),
    ("visit", "no, ni ahorita ni nunca", "decline", {"q": "confirm_stop"}),
    ("visit", "lo voy a hacer yo mismo", "decline", {}),
    ("visit", "no soy Lupita, este cel ya cambio de dueño", "stranger", {}),
    # the number of the texts, and their hour
    ("visit", "a cada rato me mandan mensajes, ya bajenle", "complaint", {"q": "confirm_stop"}),
    ("visit", "3 textos en dos dias?? ya parecen mi ex", "complaint", {"q": "confirm_stop"}),
    ("visit", "ya van cuatro mensajes", "complaint", {"q": "confirm_stop"}),
    ("visit", "no son horas de escribirle a la gente, son las 6 de la mañana", "complaint", {"q": "confirm_stop"}),
    ("visit", "que horas son estas de mandar mensajes", "complaint", {"q": "confirm_stop"}),
    # yes
    ("visit", "a huevo", "accept", {"q": "day"}),
    ("visit", "bueno, el lunes", "accept propose", {"t": ["3-9"]}),
    ("visit", "el jueves 12 a las 10... bueno, a las once", "propose", {"t": ["3-12 11:00"]}),
    ("confirm", "si pero alguien me puede llevar a la oficina despues", "accept", {"needs": ["ride"]}),
    ("after_visit", "no ha vuelto a fallar, todo muy bien", "accept", {}),
    ("after_visit", "no me ha dado lata", "accept", {}),
    ("after_visit", "no ha quedado bien", "complaint", {}),
    # asked, and what only sounds like it
    ("visit", "si el viernes. tendran donde enchufar la lap", "accept propose unclear", {"t": ["3-6"]}),
    ("visit", "hay donde sentarse a esperar?", "unclear", {}),
    ("visit", "donde quedan", "where", {}),
    ("visit", "ya se cambiaron de local?", "where", {}),
    ("visit", "me pasas la direccion", "where", {}),
    ("slot", "aguanta, preguntame en abril", "later", {"un": "2026-04-01"}),
    ("visit", "aguanta otro mes asi?", "explain", {}),
    ("visit", "ustedes tambien quitan golpes", "unclear", {}),
    ("nothing", "a como los frenos pa una minivan", "price", {}),
    ("odometer", "48390. en cuanto sale el aceite", "odometer price", {"od": 48390}),
    # gone, taken up again, late
    ("visit", "se lo robaron afuera de mi casa, ya no hay carro", "gone", {}),
    ("visit", "ese carro se lo llevo la grua y ni lo saque", "gone", {}),
    ("visit", "ya lo cambie x una troca", "gone", {}),
    ("visit", "ya lo cambie yo en la casa", "done", {}),
    ("visit", "se lo llevo al mecanico mi hijo y quedo", "done", {}),
    ("nothing", "apuntame otra vez pa los mensajes", "resume", {}),
    ("today", "hubo un choque en el puente, ya voy pero tarde", "running_late", {}),
]
