"""Spanish words for days, times and glue (without accents), grouped by what they mean to the grammar."""

from __future__ import annotations

from followup.core.replies.words import holidays
from followup.core.replies.words.entry import Entry, entries, word_set

_WEEKDAYS = (
    "lunes|lun",
    "martes|mar",
    "miercoles|mier|mie|mierc|miercole",
    "jueves|jue|juev",
    "viernes|vie|vier|viern",
    "sabado|sabados|sab",
    "domingo|domingos|dom",
)
_MONTHS = (
    "enero|ene",
    "febrero|feb",
    "marzo",
    "abril|abr",
    "mayo",
    "junio|jun",
    "julio|jul",
    "agosto|ago",
    "septiembre|setiembre|sept|sep",
    "octubre|oct",
    "noviembre|nov",
    "diciembre|dic",
)
_NUMBERS = {
    "cero": 0, "un": 1, "una": 1, "uno": 1, "dos": 2, "tres": 3, "cuatro": 4, "cinco": 5, "seis": 6, "siete": 7,
    "ocho": 8, "nueve": 9, "diez": 10, "once": 11, "doce": 12, "trece": 13, "catorce": 14, "quince": 15,
    "dieciseis": 16, "diecisiete": 17, "dieciocho": 18, "diecinueve": 19, "veinte": 20, "veintiuno": 21,
    "veintidos": 22, "veintitres": 23, "veinticuatro": 24, "veinticinco": 25, "veintiseis": 26, "veintisiete": 27,
    "veintiocho": 28, "veintinueve": 29, "treinta": 30, "cuarenta": 40, "cincuenta": 50,
}  # fmt: skip

ENTRIES: tuple[Entry, ...] = (
    *(entry for value, words in enumerate(_WEEKDAYS) for entry in entries("weekday", value, words)),
    *(entry for value, words in enumerate(_MONTHS, 1) for entry in entries("month", value, words)),
    *(entry for word, value in _NUMBERS.items() for entry in entries("num", value, word)),
    *entries("ordinal", 1, "primero|primer|primera|1ro|1ero"),
    *entries("ordinal", 2, "segundo|segunda"),
    *entries("ordinal", 3, "tercero|tercera|tercer"),
    *entries("relday", 0, "hoy|hoy mismo|hoy dia"),
    *entries("relday", 1, "manana|mnn|mna|mnana|manana mismo|el dia siguiente"),
    *entries("relday", 2, "pasado manana|pasado|despues de manana"),
    *entries(
        "relday",
        -1,
        "ayer|anoche|mes pasado|ano pasado|semana pasada|verano pasado|invierno pasado|otono pasado|fin de semana "
        "pasado|"
        "la vez pasada|vez pasada|lunes pasado|martes pasado|miercoles pasado|jueves pasado|viernes pasado|sabado "
        "pasado|"
        "domingo pasado",
    ),
    *entries("relday", -2, "antier|anteayer|antes de ayer"),
    *entries(
        "part",
        "first_thing",
        "a primera hora|primera hora|a primera ora|primera ora|en cuanto abran|cuando abran|apenas abran|al abrir|"
        "cuando abren|"
        "a la hora que abran|apenas amanezca|amaneciendo|nomas amanezca|a la hora que abren|lo primero|tan pronto "
        "abran|nomas abran|nada mas abran|nomas que abran|recien abran|en lo que abren|primera hora de la manana|"
        "a primera hora de la manana",
    ),
    *entries(
        "part",
        "early",
        "temprano|tempranito|temprano en la manana|temprano por la manana|"
        "manana temprano por la manana|bien temprano|muy temprano|por la manana temprano|"
        "en la manana temprano|tempranito en la manana",
    ),
    *entries(
        "part",
        "morning",
        "por la manana|en la manana|de la manana|por las mananas|en las mananas|mananita|x la manana|"
        "la manana|antes de mediodia|antes del mediodia|a la manana|esa manana|mananas|"
        "antes de comer|antes del almuerzo|por la mananita|en la mananita",
    ),
    *entries("part", "late_morning", "media manana|a media manana|al final de la manana"),
    *entries("part", "noon", "mediodia|al mediodia|a mediodia|medio dia|al medio dia|a medio dia|del mediodia"),
    *entries(
        "part",
        "lunch",
        "a la hora del almuerzo|hora de comida|almuerzo|la hora de la comida|hora de la comida|"
        "a la hora de comer|a la hora de la comida|hora del almuerzo|hora de comer|mi almuerzo|"
        "mi hora de comida|en mi lonche|hora del lonche|a la hora del lonche|lonche",
    ),
    *entries(
        "part",
        "afternoon",
        "por la tarde|en la tarde|de la tarde|x la tarde|la tarde|tarde|por las tardes|en las tardes|"
        "a la tarde|tardecita|esa tarde|tardes|tempranito en la tarde|temprano en la tarde|"
        "temprano por la tarde|despues del mediodia|despues de mediodia|pasado el mediodia|"
        "a media tarde|media tarde",
    ),
    *entries(
        "part",
        "after_lunch",
        "despues de comer|despues del almuerzo|despues de almorzar|despues de la comida|"
        "despues de almuerzo|despues del lonche|despues de lonche",
    ),
    *entries(
        "part",
        "late_afternoon",
        "tarde en la tarde|al final de la tarde|al caer la tarde|a ultima hora de la tarde|"
        "mas tarde en la tarde|tardeando|ya tardeando|entrada la tarde|finales de la tarde",
    ),
    *entries(
        "part",
        "end_of_day",
        "la ultima del dia|lo ultimo del dia|la ultima hora|al final del dia|a ultima hora|ultima hora|antes de "
        "cerrar|antes de que cierren|al cierre|"
        "antes del cierre|final del dia|al cerrar|fin del dia|antes q cierren|pa cerrar|para cerrar|casi pa cerrar|"
        "ya pa cerrar",
    ),
    *entries(
        "part",
        "evening",
        "por la noche|en la noche|de la noche|noche|la noche|despues del trabajo|"
        "saliendo del trabajo|cuando salga del trabajo|despues de trabajar|saliendo de trabajar|"
        "cuando salgo del trabajo|al salir del trabajo|despues de mi turno|despues del jale|"
        "saliendo del jale|cuando salga de trabajar|despues de salir del trabajo|al anochecer|"
        "nochecita|x la noche|por las noches|en las noches|despues de la chamba|"
        "saliendo de la chamba",
    ),
    *entries("part", "tonight", "esta noche|hoy en la noche|hoy por la noche|hoy noche"),
    *entries("part", "midnight", "medianoche|media noche"),
    *entries("part", "dawn", "madrugada|de la madrugada|en la madrugada"),
    *entries("ampm", "am", "am|a.m|a m"),
    *entries("ampm", "pm", "pm|p.m|p m"),
    *entries("unit", "day", "dia|dias"),
    *entries("unit", "workday", "dias habiles|dia habil|dias laborables|dia laborable"),
    *entries("unit", "week", "semana|semanas|sem|semanita"),
    *entries("unit", "fortnight", "quincena|quincenas"),
    *entries("unit", "month", "mes|meses"),
    *entries("unit", "year", "ano|anos"),
    *entries("unit", "hour", "hora|horas|hrs|hr|h|hs"),
    *entries("unit", "minute", "minuto|minutos|min|mins"),
    *entries("now", 0, "ahora|ahorita|ahora mismo|ahorita mismo|orita"),
    *entries("weekend", 0, "este fin|fin de semana|fines de semana|finde|fin de"),
    *entries("midweek", 0, "mediados de semana|media semana|mediados de la semana"),
    *entries("weekdays", 0, "entre semana|dias de semana"),
    *entries(
        "next",
        1,
        "proximo|proxima|prox|siguiente|proximos|la proxima|el proximo|la siguiente|el siguiente|"
        "de la proxima|de la siguiente",
    ),
    *entries("coming_after", 0, "que viene|q viene|que entra|entrante|que sigue|k viene"),
    *entries("this", 0, "este|esta|estos|estas"),
    *entries("last", 0, "pasada|anterior|ultimo|ultima"),
    *entries("ahead", 0, "a partir de hoy|a partir de ahora|desde hoy|mas"),
    *entries(
        "after",
        0,
        "despues|despues de|despues del|luego de|pasadas|a partir de|a partir del|desde|desde el|"
        "desde la|desde las|pasando|no antes de|no antes del|dsps de|despues como de|ya pasadas|"
        "de despues de|mas tarde de|mas tarde que|apartir de|apartir del|pasado el|pasando el|"
        "despues d",
    ),
    *entries("before", 0, "antes|antes de|antes del|antes d|mas temprano que|antes como de"),
    *entries(
        "by", 0, "para antes de|a mas tardar|no despues de|como maximo a|para mas tardar|a mas tardar a|no mas tarde de"
    ),
    *entries(
        "around",
        0,
        "como a|como|alrededor de|alrededor del|a eso de|mas o menos a|sobre|cerca de|"
        "aproximadamente|tipo|por ahi de|por ahi a|aprox|a eso d|mas o menos|hacia|como por|"
        "por ay de|por ay a|como para",
    ),
    *entries("ish", 0, "y algo|o algo asi|o por ahi|mas o menos|o asi|o por ay|y pico"),
    *entries(
        "onward",
        0,
        "en adelante|o despues|o mas tarde|pa delante|en delante|para adelante|para lante|para alante|"
        "para delante|palante|alante|para arriba",
    ),
    *entries("orearlier", 0, "o antes|maximo|como maximo|a lo mas"),
    *entries("between", 0, "entre|de entre"),
    *entries("from", 0, "de|desde|desde las"),
    *entries("to", 0, "a|al|hasta"),
    *entries(
        "until",
        0,
        "regreso de viaje el|vuelvo de viaje el|regreso de vacaciones el|vuelvo de vacaciones el|de regreso el|"
        "estoy de vuelta el|regreso a la ciudad el|vuelvo a la ciudad el|hasta|hasta el|hasta la|hasta que regrese "
        "el|regreso el|vuelvo el|regreso hasta el|"
        "de vuelta el|llego el|no puedo hasta el",
    ),
    *entries("at", 0, "a|para|pa|por|pal|quizas|quiza|tal vez"),
    *entries("on", 0, "para el|el dia|en el|pal|por el"),
    *entries("in", 0, "en|dentro de|dentro d|por"),
    *entries("of", 0, "de|del|d"),
    *entries("the", 0, "el|la|las|los|lo"),
    *entries("and", 0, "y|e|tambien"),
    *entries("or", 0, "o|u|o si no|si no|o bien|sino|o tambien|o quizas|o tal vez|o mejor"),
    *entries(
        "any",
        0,
        "cualquier|cualquiera|todo|toda|todo el dia|cuando sea|cualquier dia|cualquier hora|algun|"
        "alguna|a cualquier hora",
    ),
    *entries(
        "early",
        0,
        "principios de|a principios de|principio de|comienzos de|a comienzos de|inicio de|inicios de|"
        "a inicios de|al principio de|principios del|a principios del|primeros dias de|comienzo de|"
        "al inicio de|al comienzo de|a primeros de|principio del|inicio del",
    ),
    *entries("mid", 0, "mediados de|a mediados de|mediados del|a mediados del|a mitad de|mitad de"),
    *entries(
        "late",
        0,
        "finales de|a finales de|final de|al final de|fin de|fines de|a fines de|a fin de|"
        "finales del|fines del|final del|fin del|a final de|a fin del|ultimos dias de",
    ),
    *entries("half_after", 30, "y media|y 30|y treinta"),
    *entries("quarter_after", 15, "y cuarto|y quince"),
    *entries("quarter_before", 15, "menos cuarto|menos quince"),
    *entries("quarter_of", 15, "cuarto para|un cuarto para|cuarto pa|quince para"),
    *entries("oclock", 0, "en punto"),
    *entries("couple", 2, "un par de|par de|un par"),
    *entries("few", 0, "unos|unas|varios|varias|algunos|algunas|unos cuantos|unas cuantas|pocos|pocas"),
    *entries("half_hour", 30, "media hora"),
    *entries("season", 3, "primavera|la primavera"),
    *entries("season", 6, "verano|el verano"),
    *entries("season", 9, "otono|el otono"),
    *entries("season", 12, "invierno|el invierno"),
    *entries(
        "holidays",
        0,
        "fiestas|las fiestas|fiestas navidenas|fiestas decembrinas|las fiestas decembrinas|"
        "las fiestas navidenas|vacaciones de navidad|fiestas de fin de ano|las fiestas de fin de ano|"
        "fiestas de ano nuevo|las fiestas de ano nuevo|fiestas de diciembre|las fiestas de diciembre",
    ),
    *holidays.SPANISH,
    *entries(
        "except", 0, "menos|excepto|salvo|menos el|excepto el|pero no|pero no el|que no sea|que no sea el|menos los"
    ),
    *entries(
        "correction",
        0,
        "digo|perdon|mejor dicho|no espera|no perate|o sea|quise decir|no mejor|perdon quise decir|"
        "me equivoque|corrijo|perdona|disculpa|espera",
    ),
    *entries(
        "word",
        0,
        "buenos dias|buenas tardes|buenas noches|buen dia|buena tarde|buena noche|buenas|"
        "feliz navidad|feliz ano nuevo|felices fiestas|feliz dia|mas tarde|no mas tarde|muy tarde|"
        "se me hizo tarde|tarde o temprano|voy tarde|vamos tarde|ando tarde|llego tarde|llegare tarde|llegar tarde|"
        "llegamos tarde|un poco tarde|se me hace tarde|se hizo tarde|voy un poco tarde",
    ),
    *entries(
        "word",
        0,
        "buenos dias|buen dia|buenas tardes|buenas noches|buena tarde|buena noche|buenas tarde|"
        "linda tarde|bonita tarde|linda noche|bonita noche|buen fin de semana|lindo fin de semana|"
        "bonito fin de semana",
    ),
    *entries("instead_of", 0, "en vez de|en vez del|en lugar de|en lugar del|envez de"),
)

MARKERS = word_set(
    "el la los las un una de del que y en por para con mi mis su sus es esta este si no me te"
    " se lo le ya muy mas pero como"
    " cuando donde cuanto cuesta quien porque gracias hola buenos buenas dias tardes noches"
    " manana hoy lunes martes miercoles"
    " jueves viernes sabado domingo semana puedo puede quiero tengo tiene voy vendi carro"
    " coche auto llanta llantas frenos"
    " aceite luego despues antes favor bueno bien esta claro dale vale perfecto semana proxima"
    " hora horas vengo llego vez"
    " nada nadie numero equivocado otro otra todavia cita nunca soy somos estoy seria hace hay"
    " ir ver haga hagan mande manden"
    " mensajes ni al ese esa eso alto baja parar pare basta salir cancelar ayuda alta empezar"
    " llamenme llameme quitenme tarde"
    " fines sale va cual digo perdon miles millas kilometros paso estan son fue ando hice hicieron sirve porfa"
)
"""Words that show that a text is Spanish."""
