"""When a fault shows: braking, turning, shifting, starting, at a speed, over bumps; in both languages."""

from __future__ import annotations

import re

_ACT = (
    r"(?:brake|braking|pull(?:ing)? away|loosen\w*|take (?:my )?hands? off|(?:make|take) an? (?:\w+ )?(?:turn|"
    r"corner|curve)|tak(?:e|ing) (?:off|corners|curves)|floor(?:ing)? it|punch(?:ing)? it|speed(?:ing)? up|"
    r"(?:get|getting) up to speed|pass(?:ing)? (?:someone|people|a)|lift(?:ing)? off|cruis(?:e|ing)|"
    r"coast(?:ing)?|hold(?:ing)? the brake|accelerat\w+|shift(?:s|ing)?|hit(?:ting)? (?:the |a |my )?(?:brakes?|"
    r"gas|bumps?|potholes?|speed "
    r"bumps?|dips?|throttle|anchors)|(?:press|push|step|stomp|stand)\w* (?:on |down )?(?:on )?(?:the |it|my "
    r")?(?:brakes?|"
    r"pedal|gas|clutch|it)|turn(?:s|ing)? (?:the )?(?:wheel|left|right|key|corners?|sharp|the key|hard)|turn(?:s|"
    r"ing)?(?! (?:\d|in (?:my|the)|it in|out|around|down|to|him|her|them|off the (?:text|alert|remind)\w*))|"
    r"steer(?:ing)?|back(?:ing)? (?:up|out|it)|revers(?:e|ing)|let(?:ting)? (?:off|go|up)|slow(?:ing)? down|"
    r"com(?:e|ing) to a stop|stop(?:ping)?(?=\Z|,| (?:at|and|or|hard))|cross|driv(?:e|ing)|giv(?:e|ing) it "
    r"(?:some )?gas|"
    r"put(?:ting)? it in|start(?:ing)? (?:it|the (?:car|truck|van|engine)|her|up)|crank(?:ing)?|idl(?:e|ing)|"
    r"merg(?:e|ing)|"
    r"pull(?:ing)? (?:out|away|into|in)|go(?:ing)? (?:over|up|down|around|uphill|downhill|fast|through)|"
    r"tap(?:ping)? the|"
    r"it (?:shifts|idles|rains|is (?:cold|wet|raining|hot))|(?:it |the engine |engine )(?:is )?(?:cold|warms up|warm)|"
    r"(?:get|getting) on (?:it|the (?:gas|freeway|highway))|tow(?:ing)?|park(?:ed|ing)?|parked)"
)
_CUANDO = (
    r"(?:fren\w+|acele\w+|dobl\w+|(?:dar|doy|das|da|dando|di) (?:la )?(?:vuelta|reversa)s?|vir\w+|volte\w+|arranc\w+|"
    r"prend\w+|enciend\w+|encend\w+|camin\w+|manej\w+|pas\w+ (?:un |los |por )?(?:tope|bache|hoyo)s?|paso (?:un|"
    r"los|por)|"
    r"met\w+ (?:la )?(?:reversa|drive|cambio|segunda|primera|velocidad)\w*|sub\w+|baj\w+|pis\w+|gir\w+|retroced\w+|"
    r"ech\w+ (?:pa|para|reversa|a andar)\w*|le (?:doy|acelero|piso|doy al aire)|va (?:despacio|rapido|en)|voy "
    r"(?:a|en|manejando|"
    r"despacio|rapido)|cambi\w+ (?:de )?(?:velocidad|cambio|marcha)\w*|llueve|(?:agarr|tom)\w+ (?:velocidad|"
    r"(?:una |la )?curva)|(?:le|lo) (?:meto|piso|prendo|arranco|acelero)|apag\w+|agarr\w+ (?:un )?(?:tope|bache|"
    r"hoyo)s?)"
)
STRONG = re.compile(
    r"\b(?:(?:when|whenever|while|every time|each time|any ?time|once|as soon as|if) (?:(?:i|we|you|it|she|he|im|were|"
    r"ever|you are|its|it is|just|even|first|lightly|slowly|that) ){0,3}" + _ACT + r"|"
    r"(?:cuando|cada (?:vez )?que|al|si|en cuanto|apenas|nomas (?:al|que)|siempre que|mientras) (?:(?:le|lo|la|"
    r"se|yo|uno|uno le|uno lo|"
    r"mas|me|el carro|la troca|ya|nomas|solo|voy|va) ){0,2}" + _CUANDO + r"|"
    r"over (?:\w+ )?(?:speed )?(?:bumps?|potholes?|railroad|tracks|dips?)|"
    r"(?:on|in|at|during) (?:\w+ )?(?:(?:left|right|hard|sharp|slow|tight) )?(?:turns|turning|corners|curves|"
    r"takeoff|acceleration|"
    r"braking|cold starts?|start ?up|downhills?|uphills?|bumps|inclines?|hills)|"
    r"(?:in|into) (?:reverse|drive|neutral)|from a (?:\w+ )?(?:stop|standstill)|(?:at|over|above|past|around|"
    r"about|near|hit|hits|hitting|reach|beyond|under|"
    r"by|to|doing|going) (?:like |about )?(?:[2-9][05]|1[0-2]0|[3-9]\d) ?(?:mph|kph|km|kmh|k|miles an hour)?(?! "
    r"?(?:am|pm|dollars|bucks|"
    r"min|minutes|hours|percent|days|miles|people|years|weeks|th|k miles|mi)\b)\b|"
    r"\d\d (?:mph|kph)|at (?:idle|(?:low|high|highway|any|higher|lower|slow) speeds?|a stop|(?:red|stop) ?lights?|"
    r"stop signs?|speed)|going (?:uphill|downhill|up hills?|down hills?)|(?:up|down) (?:a |the )?hills?|uphill|"
    r"downhill|(?:on|up) (?:the )?(?:hills|inclines|grades)|pulling away|taking off|after (?:the|that|a) (?:hill|"
    r"pothole|curb|bump|long drive)|"
    r"en (?:frio|reversa|neutral|las? (?:vueltas?|curvas?|subidas?|bajadas?)|los (?:altos|topes|baches|semaforos)|"
    r"segunda|tercera|el (?:freeway|fwy|highway|trafico|semaforo|alto)|la (?:carretera|autopista|freeway|loma))|"
    r"de (?:subida|bajada)|cuesta arriba|(?:a los|a las|a|arriba de(?: las| los)?|pasando(?: de)?(?: las| los)?|"
    r"mas de|paso (?:de|las|los)|llego a(?: las| los)?) (?:[3-9]\d|1[0-2]0)(?! ?(?:dolares|pesos|am|pm|minutos|mil|"
    r"anos|"
    r"dias|horas|veces|mensajes|personas|mil))|con (?:el|este) frio)"
)
"""A situation of driving."""
WEAK = re.compile(
    r"\b(?:in the mornings?|when (?:its |it is |the engine is )?(?:cold|hot|wet|raining)|on the (?:freeway|"
    r"highway|interstate|road)|"
    r"first thing|while parked|en las mananas|por las mananas|since (?:yesterday|last|then|the|this|i|we|monday|"
    r"tuesday|sunday|saturday|friday)|now\b|lately|again|every (?:few|couple)|all the time|constantly|cuando "
    r"(?:esta )?frio|"
    r"cada vez mas|desde (?:ayer|que|hace|el|la|anoche|entonces)|todo el tiempo|otra vez|ultimamente)\b"
)
"""Words that tell since when or how often: no driving by themselves."""
ELSEWHERE = re.compile(
    r"\b(?:onto|street|st|avenue|address|located|your (?:shop|place|lot|driveway|building)|the "
    r"light\b.*\b(?:left|right)|calle|"
    r"donde (?:quedan|estan|es)|taller|exit|salida|where are you|how do i get|como llego|find you)\b"
)
"""Words of the way to us, where turning and passing is no fault."""
