"""Reports in Spanish that are a phrase, and Spanish phrases that only sound like one."""

from __future__ import annotations

_CAR = r"(?:carro|coche|auto|troca|camioneta|motor|guagua|mueble|nave|carrito)"
_PARTS = (
    r"(?:motor|transmision|banda|manguera|bomba|radiador|clutch|flecha|rotula|rin|balero|resorte|amortiguador|cabeza|"
    r"empaque|marcha|alternador|mofle|escape)"
)
_GAVE_UP = (
    r"(?:ahi|alla|alli|se) (?:me |nos |se |le )*(?:quedo|quede|quedamos|paro|murio|apago) (?:\w+ )?(?:(?:en|a) "
    r"(?:medio|mitad|media|plen[oa]|un lado|la orilla|el acotamiento|el carril)|a medi[oa] (?:calle|camino|carretera))"
    r"(?! (?:examen|junta|pelicula|llamada|turno|clase))",
    r"qued(?:o|e|amos|aron) (?:\w+ )?(?:tirad|botad|varad|parad)[oa]s?(?= (?:en|a|por|sobre|cerca|ahi|alla|camino|"
    r"saliendo|con|otra)|\W*\Z)(?! (?:en (?:la (?:fila|sala|puerta)|el trafico|un tren)|esperando|a esperar))",
    rf"(?:{_CAR}|tosio|jaloneo|trono|apago) (?:\w+ ){{0,3}}(?:ya no|nunca|no) (?:qui[sz]o|quiere)(?=\W|$)(?! (?:que|ir|"
    r"venir|la|el|los|mas|nada de))",
    r"(?:ya no|nunca|casi no|no) (?:me )?(?:qui[sz]o|quiere|queria) (?:andar|caminar|jalar|seguir|avanzar|moverse|"
    r"prender|arrancar|encender|dar marcha|agarrar|frenar|pararse|detenerse|subir)(?! (?:la cita|las? escaleras?))",
    rf"{_CAR} (?:\w+ ){{0,2}}dijo (?:que )?(?:hasta aqui|hasta ahi|ya no|basta|no mas|adios)",
    r"des[bv]iel\w+",
    rf"se (?:le |me )?(?:amarro|fundio|trono|quebro|rompio|revento|zafo|safo|chingo|jodio) (?:el|la|los|las|una?) "
    rf"{_PARTS}",
    r"a veces (?:si )?(?:me |le )?(?:fren|prend|arranc|enciend|agarr|jal|carg|respond)\w*,? (?:y |pero )?(?:a veces|"
    r"otras(?: veces)?) no",
    r"(?:no|ya no|casi no|apenas) (?:me |le |se )?(?:esta|estan|anda|andan|estaba|estaban) (?:frenando|agarrando|"
    r"prendiendo|arrancando|jalando|cargando|enfriando|encendiendo|respondiendo|parando|acelerando)(?! (?:senal|la "
    r"llamada|el (?:cel|wifi)|internet|citas?|clientes))",
    r"(?:ech\w+|pas\w+|dar\w*|daban?|dieron|di|puse|pusieron|poner\w*) (?:\w+ )?(?:cables|corriente|puente)(?= (?:para|"
    r"y|esta|ayer|hoy|en la|cada|todos|otra|porque|al (?:carro|coche)|a la (?:troca|camioneta)|a mi (?:carro|troca|"
    r"camioneta|coche))|\W*\Z)",
    r"(?:vino|vinieron|llame|llamamos|pedi|pedimos|necesito|ocupo|llamar|manden|mandenme|esperando) (?:a )?(?:una |la |"
    r"por (?:una )?)?grua",
)
SPANISH_NOW = (
    r"(?:esta|estaba|quedo|amanecio|traigo|trae|anda|tengo|viene) (?:\w+ )?(?:ponchad|pinchad|desinflad|"
    r"espichad)[oa]s?",
    r"no da (?:\w+ )?(?:la )?vueltas? (?:\w+ )?(?:el|la|mi) (?:volante|direccion|llanta|rueda|timon|guia)",
    r"(?:frenos?|balatas?|direccion) (?:asi de |tan )(?:mal(?:os|as|o|a)?|jodid\w+|chafas?|flojos?|bajos?)",
)
SPANISH_TODAY = (
    r"se (?:me |le )?(?:baj[oa]|esta bajando|acab[oa]) (?:mucho |rapido )?(?:el )?(?:aceite|anticongelante|coolant|"
    r"liquido)",
    r"(?:ya )?no (?:me |le )?(?:pita(?=\W*\Z|[,.!])|suena el (?:claxon|pito))",
    r"(?:frenos?|direccion|pedal|volante|motor) (?:\w+ )?ya no (?:es|son|esta|estan|se siente\w*|frena\w*|"
    r"responde\w*) (?:el |la |los "
    r"|las |lo )?(?:mism\w+|igual(?:es)?|como antes)",
    r"se (?:me )?va (?:bien |muy )?largo(?= |\W*\Z)(?! (?:el tiempo|la fila))",
    *_GAVE_UP,
    r"se (?:me )?(?:quiere|queria) ir (?:\w+ )?(?:para|a|hacia|de) (?:la |el |un |al )?(?:zanja|orilla|lado|carril|"
    r"izquierda|derecha|banqueta|cuneta|contrario|otro carril|acotamiento|barranco)",
    r"(?:traga|come|chupa|consume|bebe) (?:el |mucho |un chorro de |bastante |todo el )?(?:aceite|agua|anticongelante|"
    r"coolant)",
    r"(?:aceite|agua|coolant|anticongelante) (?:\w+ ){0,6}se (?:lo|la) (?:traga|come|chupa|acaba|bebe|toma)",
    r"(?:tir|got|chorr|escurr|bot|pierd|sac)\w* (?:\w+ )?(?:aceitito|aguita|liquidito|gotitas?|chorrito)",
    r"parece (?:\w+ )?(?:arbol\w*|discoteca|disco|feria|navidad|casino|antro|patrulla|semaforo)(?: \w+){0,3} (?:el |"
    r"mi )?"
    r"(?:tablero|dash)",
    r"(?:tablero|dash) (?:\w+ ){0,2}parece (?:\w+ )?(?:arbol\w*|discoteca|disco|feria|navidad|casino|antro)",
)

_LIMBS = (
    r"(?:manos?|piernas?|rodillas?|pies?|dedos?|brazos?|huesos?|parpado|ojos?|cabeza|corazon|panza|estomago|espalda|"
    r"labios?|voz|alma|caderas?|hombros?|cuello|tripas?|pulso)"
)
_OURS = (
    r"(?:perr\w+|gat[oait]+s?|mascota|pajar\w+|loro|caballo|vaca|papa|mama|espos[oa]|marido|mujer|hij[oa]s?|"
    r"herman[oa]s?|"
    r"novi[oa]|viej[oa]|jefit[oa]|abuel[oa]|abuelit[oa]|vecin[oa]|compadre|comadre|amig[oa]|companer[oa]|jef[ea]|"
    r"patron|"
    r"cunad[oa]|prim[oa]|ti[oa]|suegr[oa]|sobrin[oa]|bebe|nin[oa]|brazo|pierna|pie|mano|tobillo|dedo|familiar)"
)
_FOLK = (
    r"(?:vecin[oa]s?|compadre|comadre|amig[oa]s?|companer[oa]s?|jef[ea]|patron|cunad[oa]|prim[oa]s?|tio|tia|suegr[oa]|"
    r"compa|sobrin[oa])"
)
_WELL = (
    r"(?:bien|parejo|derecho|derechito|chido|al (?:cien|100)|a todo dar|de maravilla|excelente|suave|de lujo|perfecto|"
    r"padre|de pelos|mejor|super)\b(?! (?:feo|mal|raro|fuerte))"
)
_CRASH = r"(?:accidente|choque|volcadura|carambola|choquecito)"
SPANISH_IDIOMS = (
    # the day, the house, oneself
    r"se (?:me|nos|le) (?:descompuso|echo a perder|complico) (?:tod[oa] )?(?:el|la|mi) (?:dia|manana|tarde|semana|"
    r"plan|agenda|"
    r"horario)(?! (?:pasad|anterior|de ayer|(?:\w+ ){0,2}(?:el|la|mi) (?:carr|coche|troca|camioneta|auto)))",
    r"(?:vecin[oa]s?|(?<!en )(?<!en la )(?<!en mi )(?:casa|cocina|bano|departamento|apartamento|lavadero)) (?:tiene|"
    r"tuvo|"
    r"con) (?:una |la )?(?:fuga|gotera)s?(?: de (?:agua|gas))?",
    r"(?:fuga|gotera)s? (?:de (?:agua|gas) )?(?:en|de) (?:la|el|mi|nuestra) (?:casa|cocina|bano|techo|departamento|"
    r"apartamento|sala)",
    r"(?:inund|moj)\w+ (?:toda )?(?:la|el|mi) (?:casa|cocina|bano|sala|departamento) (?:por|con) (?:una |la "
    r")?(?:fuga|gotera)s?",
    r"(?:yo )?(?:tiemblo|temblamos)(?: (?:de|con|cuando|al) \w+)?",
    # anger, and people
    r"(?:sal|ech|sac)\w* (?:\w+ )?(?:humo|lumbre) (?:de|por) (?:las |los |la )?(?:orejas|cabeza|oidos|narices|cerebro)",
    r"(?:ech|sac|bot|tir)\w* (?:humo|chispas|lumbre) (?:con|por|de) (?:ustedes|usted|est[ae]|tanto|puro|mi jefe)\b(?: "
    r"\w+)?",
    rf"(?:(?:me|le|nos|les) )?(?:tiembl|tembl|duel|cruj|tron|truen)\w* (?:\w+ )?(?:las?|los|el|mis?) {_LIMBS}"
    r"(?! (?:\w+ ){0,3}(?:cuando|al|si|volante|manej\w+|agarr\w+))",
    rf"se (?:me |nos |le )?(?:murio|muere|esta muriendo|enfermo|rompio|quebro) (?:mi|mis|el|la|un|una|su) (?:\w+ "
    rf")?{_OURS}"
    r"\b(?: \w+)?",
    r"se (?:me |nos |le )?(?:apago|acabo|cayo|paro|murio|descompuso|fue) (?:el|la|mi) (?:negocio|chamba|trabajo|jale|"
    r"internet|estufa|luz (?:en|de) (?:la|mi)? ?casa)",
    r"(?:clases? de|tengo|voy a|ir a|mi|despues de|hago) zumba(?! (?:cuando|al|mucho|feo|en|a los))",
    r"humo (?:\w+ ){0,4}(?:era|es|venia|viene|fue) (?:del?|de la|de los|de mi) (?:asador|vecin\w+|asado|parrilla\w*|"
    r"carnita\w*|cigarro|comal)",
    r"no (?:me |le |les |se |nos |lo )*(?:mand|escrib|envi|hic|hiz|hac|cobr|dij|dig|cambi|pregunt|hag|vay|gast|pus|"
    r"pid)\w* "
    r"nada\b",
    rf"(?:anda|esta|viene|sigue|va|quedo) (?:\w+ )?jalando (?:\w+ )?{_WELL}",
    r"(?:hago|hacemos|haga|hagan|hacer) (?:mucho |tanto |nada de )?ruido(?! (?:al|cuando|en|la|el|si))",
    rf"{_OURS} (?:\w+ )?(?:choco|estrello|poncho|descompuso) (?:su|el suyo|la suya)(?: \w+)?",
    rf"se (?:le )?(?:poncho|descompuso|quedo|apago|murio|pincho) (?:\w+ ){{0,4}}(?:del?|al?) (?:mi |un |una |la |el "
    rf")?{_FOLK}",
    r"(?:foco|luz|luces|puerta|llave|tubo|agua|bano|boiler|refri|techo|calentador|aire) (?:\w+ )?(?:de|en) (?:la|"
    r"mi) casa"
    r"[^.!?,]*",
    r"(?:como |que )?(?:bien |padre |chido )?suenan? (?:\w+ )?(?:el|la|las|mi|mis) (?:estereo|musica|bocinas|"
    r"cancion|rolas?)",
    rf"{_OURS} (?:\w+ )?(?:me|nos) (?:esta|estan|anda|andan) jalando",
    r"(?:vibr|tembl|tiembl|brinc|salt|truen)\w* de (?:la )?(?:emocion|gusto|alegria|miedo|frio|nervios|coraje|"
    r"felicidad|risa)",
    r"que (?:ruidos?|sonidos?) (?:debe|deberia|haria|tendria que)[^.!?]*",
    # traffic, and other people's cars
    rf"(?:hay|hubo|habia|por|vi) (?:un |otro |una )?(?:\w+ )?{_CRASH}(?:(?= (?:en|adelante|aqui|por|sobre))| ?,? "
    rf"(?:y )?"
    rf"(?=ya |voy|llego|ando|estoy|vamos|tard))(?:[^.!?,]{{0,30}} no (?:se )?(?:avanza|mueve|camina)n?)?",
    rf"(?:trafico|fila|cola|linea|{_CRASH}|puente|freeway)\b[^.!?]{{0,40}} no (?:se )?(?:avanza|mueve|camina)n?",
    r"(?:habia|hay|vi|paso|iba) (?:un|una|otro|otra) (?:carro|troca|camion|trailer|coche|camioneta|auto|bus) (?:\w+ )"
    r"{0,3}(?:echando|sacando|tirando|con|parad|tirad|varad|botad|volcad)\w*(?: \w+)?",
    r"(?:ayud|auxili|apoy)(?:e|ar|ando|amos|arle|andole|arlo|o) (?:\w+ ){0,8}(?:ponchad\w+|llantas?|corriente|"
    r"cables|tirad\w+|varad\w+|botad\w+)",
    r"(?:arranc|prend|encend|descompuso|poncho|fall|llegaba|llego)\w* el (?:bus|camion|autobus|metro|tren|uber|taxi)",
    # what is only asked
    r"(?:en |a |y |como )*(?:cuanto|como cuanto|que precio) (?:me |nos |les |le )?(?:salen?|saldria|saldran?|tira)\b",
    r"(?:(?:ustedes|uds|alla|ahi|tambien|y|si|oigan?|hola|hacen hojalateria) )*(?:quitan|sacan|arreglan|reparan|"
    r"componen|"
    r"hacen|revisan|enderezan|checan|parchan) (?:\w+ )?(?:golpes|abolladuras|rayones|choques|hoyos|ponchaduras|fugas|"
    r"ruidos|chipotes)(?=\W*$|[?.!,]| tambien| o | y )",
)
