"""Usual Spanish words of replies: made by `python -m tests.replies.fit_words`."""

OFTEN = """\
el no me la de a y que en ya lo se las si mi es q por cuanto le con los voy un pero manana del como pa carro gracias
mas al dia viernes puedo cuando jueves hora o lunes ahi bien tengo eso yo una esta tarde quiero otro mejor cita
martes ese hasta otra todo va despues hay antes ni para vez ustedes puede sabado semana nada quien estoy asi favor
hoy trabajo mil ir este llego sale ando donde dos quedo hace les ahora mismo aceite estan trae llevo numero su
mensajes miercoles paso mes tienen muy nomas soy ahorita tiene esa hicieron sin taller jaja temprano d llanta precio
abren van media ser pal vendi frenos menos servicio troca cual lado millas pues ver dejo tan necesito cambio mal
telefono digo mucho todavia horas salgo casa claro fue ok anda ayer falta llevar porfa algo cobran queda dias dios
hacer llantas luego freno nunca son tiempo sea desde era ocupo porque persona cambie cancele da hizo llameme alguien
direccion nuevo ruido saliendo luz hablar tambien aqui domingo manden sigue alla rato tardan verdad casi dice te baja
mecanico nos x vuelta quiere textos am humo salir viene azul dejaron digame espero hice llegar primero pueden toca
aviso noche dinero hijo escuela llegue lugar ninguno salio entre hago pasado siempre lista pasar perdon senor vemos
agua cobraron quede seria cambiar esposo igual primera solo cambiaron deje hableme llame prende abajo caigo ninos
sirve cualquier dale interesa mensaje motor perfecto apenas calle joven min traigo blanca bueno cada disculpe
entonces esperar hermano prendio ta tempranito usted atras huele ninguna oiga oye pasada turno volante adelante aire
creo dejen doy entra hija llamenme mis tres ultima uno hacen jefe marqueme poder prefiero simon veces bateria cuesta
dan dar gusto nadie pasa podria regreso ano dueno estare fin jala mio carros di feo mama ningun pusieron total
camioneta cierran cosa escriban esto libre quitenme recibir robaron suena sus tarda todos cancelar esas minutos pedal
quiten seguro unas balatas camino cancelen dejar gratis lleva marzo mayo saber unos abril cuarto medio pm puse urge
cualquiera dura entro esos lleve nombre ocho one tanto tiembla tipo vale alto confirmo estar jale listo mero rueda
trabajar anoche aunque ay cel chance cliente decir esposa estamos fuera he meses mientras mijo parte quedan quemado
recordatorios sedan tablero toy buenas conozco filtro freeway gasolina hable hablo mandar manejando mediodia pronto
puerta tal tengan viaje vibra alcanzo costo deja dieron enero horario k liquido misma pls podemos caro frena grave
grua llamada momento orita salga senora vida vuelvan apago cuatro cuenta escribir espacio estos fui mandan manejo
marca more nuevas permiso pie primo semanas siguen vamos veo abiertos amable arreglo cuantas deme descanso escriben
habla junio pase perdida pieza proxima senorita sorry urgente verano abran aceptan apaga compadre diciembre dijeron
foco hecho mano muchacho nino pagar pague proximo punto quisiera rechina ride rojo sabados thousand toda up uy cheque
dealer depende dije eres llave muchas parece paren pedi quincena siente sii tantito trabajan trafico vuelva avisos
buen compre dejarlo ella entiendo fijese frenar hospital like malo pena podre puso quieren roja segunda tenga tirando
ve viejo volver vuelvo acuerdo agradezco arreglaron atencion avisar ayuda borren check cunado dejelo den entrada fuga
gente gerente hablamos late llevarlo mandarme nel papa parar posible puro quienes recojo sera vecino venden vos acabo
agarro aguanta amanecio asiento basta cambia carrito choque cien dame dijo engine escribo espera estaria estuvo habia
imposible llamame llamar luces navidad necesario nina nueve paro pesimo poquito pq problema rapido sabe sala siento
sirven tener truena tu vi adentro arranca banco barato bendiga blanco calienta cerca chocaron cobre completo conmigo
cosas cuarenta day doble enfrente equivocado esperando excelente gas grasa hacerlo hermana iglesia julio mande mando
mexico mire nueva obra orale paguen parado poco regrese saldria stop texto yes alineacion amor as bebe bonito cancelo
cara cuantos debajo demora diez doctor estaba fecha hablan hablando junto lleno manda mandando nieto off piso poner
porfavor porq pueda quite salida says sigan significa sip tardes tarjeta tira vendimos afuera alta amigo busco
cambiarla ciudad cobrar cobro cochera confirmado corto denme derecha dime domingos don echo encargado esquina factura
febrero garantia goma here hola hundred jajaja lejos llaves modo opcion poncho pongame pos pregunta prestado
primavera quedamos radiador saben tirado toma two vacaciones vengo xq algun andar bici bus celular cierren cierto
clutch cofre decirle dejame dejeme descuento dio echando empezo entregaron equivoco escribe escribirme estado feliz
gomas gps gustaria hablenme llamen mija misa nah pare partes preguntar puente running tardar temperatura texts
trataron vive acaban acabe agarran ah apunteme bendiciones buenos cafe cancel carretera chamba clase dejan entregan
entregue feria fiestas forty foto gusta ha iba jamas jeje llega lleguen lleven lonche marquenme moverla oigan olvido
once onda orden pasela past peligroso perdi perro plz ponen prender querer quit raro recibo recuerdeme renta sacar
tardecita termine transmision tuve vaya acaba acomoda agarra agencia agosto alli amables atrasado behind borrenme
buscan buzon calento caso charco dentro deseo dicen done eight entrante estas estimado fri frio fueron gasolinera
gotta hombre inspeccion jalonea labor maquina marcha meto mover murio noviembre out par peor ponchada pregunteme
rayaron rechinan reciben robot sali septiembre sistema suegra suegro thats ultimo uso vapor venia way wifi again
agradece amarilla andamos anos arreglan avenida bajo banda brinca busca cambios cancelela chevere comadre contesta
correcto corte dando dentista dicho echa entendi equivocaron ex exactamente explica faltan fierro habra haciendo
importa incluye invierno je junta largo last llama mala mananas mananita mandaron manejar marco marque mensajitos mia
mnn modos molestia negocio ocupan olor pago parenle paz pico plis pongo porfis precios preguntame prendo puntual
quito ratito recoger respeto respondo retraso start sube sucio tapon tardo tenemos textearme texting these thurs
tortillas tren vender vendio visita acelero adelantar agarre alcanza all altos appointment arregle arriba aseguranza
atendio autopista baje cae camion campo cayo cerrado checar choco ciento compa contacto contento cuide darle datos
dejamos demas descompuso dialisis diga digan driveway eh espanol fa finde flush foquito from golpe grande guagua
houston ido ire ish juego llegando llueve local loco mandame marcar millaje mofle molesto muevo negro nieta noon
oficina opinion over pasando paseme pienso piezas prendida prendido preocupe prestan quedar quemo queria quiza raite
recuerda reversa rin ruidito say seguir segun sentado serio sigo super tardecito taxes tendra texteen thx tomo too
trabajando traer trato ubicacion unico velocidad verde vieja vieron yall yonke zumbido agenda agendeme almuerzo andan
anticongelante aparecio arreglar asistir atendieron atienden auto bache boda bomba borre bota break buscando busqueme
cabina caiga calentando cambiado cambian cambiemela camina cancela cerrar checo chilla chiste cinco clic comer
complico conviene cuento cupon curiosidad dash dejenme doce dolares eche empezar entrar escape espere eta familia
feels fondo four fumar gano golpeteo gotea guardado guatemala huevo igualmente importante ingles izquierda kiero lata
lavadora llantera llevado lunch manguera marido mayor meter miedo muchacha mueve n nieve octubre ojala otono parada
parking partido pas peso pin pobre ponme preguntenme pueblo queja quiso rapidito recien reembolso regale respuesta
retrasado revisar rumbo saludos santo saque segundo siguiente sol supuesto tax temporada terapia textear then tio
tiro todas trabaja truene tuvieron ty uds vacia vecina ven veras vino vivo vueltas vuelvanme well whats ademas
afirmativo agarrar aguja amarillo aparte arrancar arrastrando arrepenti avisando baby baila cable caja cargo carisimo
chatarra chico chido clases compran comuniqueme contenta corriente costar cuadras debe debo delante devolvieron
diganme early encontraron encuentro enfermo equivoque escoger especial esperen esten expliqueme falla final firme
first fuerza garage gasto goteando grosero hacia haga half han honduras humano juntar lease lentes let lets licencia
light limpiaparabrisas linea mandado mandenme maravilla message miles minutes mismos mostrador muchachos mude mujer
my nao neither nooo nop normal odometer oh okey olvida option ora pagan pagos pais papel pasame patron pendiente
person pickup planes policia pongan premio puedan quieran quince radio reads recogi recorrer regresaron remove
revento revisan revision right rompieron rotar ruidos salen schedule see seguido siendo siete siganme silla sintetico
sobrino solito suelto suspension tardado ten thanksgiving thirty tirada top trade traia tues universidad usa vean
vehiculo whos xfa yerno
"""
OTHERS = """\
abanico abejorro abierta abierto abogado abogados abra abrazo abre abriendo abrieron abrio abrir abro abrocha
absolutely absolutly abuela abuelita abuelito abuelo abusivos abuso acabando acabar acabaron acaso acceleration
accidente accidentes accion aceitera aceites aceitito aceitoso acelera acelerador acelerar acento acepte acepto
acerco acero aclarar aclareme acomodamos acomodan acomodaria acomodo acompana acondicionado acordada acordado
acordarme acordarse acordeon acoso acostumbre activar active activen actually acuerda acuerdan acuerdate acuerdese
acuesto added address addy adelanta adelantarla adelantemela adelanten adelantenmela adelantito adelanto adios
aditivo adivine adjunta admiracion adonde adorno adress aduana aeropuerto afecta affirm affirmative afinacion afirma
afloje aflojo afternon aftrenoon afueras agamos agarara agarraron agarraste agarren agendame agendan agendar
agendaran agendelo agent agente agora agote agradeceria agradecida agradecido agreed agregar agrego agreguenme
aguacero aguado aguantaban aguantame aguantan aguantar aguantara aguantarla aguante aguanteme aguanten aguantenme
aguanto aguas aguda aguinaldo ahijada ahoga ahorra ahorrando ahorrar ahorrense aint airbag airecito ajustador ajuste
alabre aladino alado alambre alambres alambrito alambritos alante alargo alarma alas alaska albondigas alcance
alcanzan alcanzar alegre aleta alfombra alguna alguno alignment alineaciones alineado alineamiento alinear alinearon
aliviane alivie allow alma almohada almost alone alredy alright alrighty alternador alternator altura alturas
alumbran always amablemente amanece amanecere amanezca amanezco amarrarlo ambar amber ambos ambulante amen america
american amiga amortiguadores amortiguan anaranjada andaba andadura andale andaluces andara andaria ande andele anden
angielsku anglais anillo anime animo anoteme another anteayer antena anterior antonio anulado anulala anular anule
anulela anulen anulenla anuncio anuncios anymore anything anytime apagado apagamos apagan apagando apagar apagarla
apagaron apague apaguen apartala apartame apartamento apartar apartela aparteme apartenme aparto apellido apena
apesta apiladas aplastar aplica apnten apoco appreciate appreciated approx appt apreciado aprecio apretada apretado
apretados apreto aprieta aprietan april aprovechando aprovecho aproximadamente aproximado aptos apuesta apuntame
apuntan apuntar apuntaron apunte apunten apunto apure apuren apurense aquel arbol arbolito archivo area arma arman
armo army aromatizantes arrancaba arrancaron arranco arranque arrastrado arrastrara arrastras arre arregla arreglado
arreglamos arreglarla arreglarlo arreglelo arreglen arruinarme arte artificial artritis arvo asada asado asador
asaltaron asap asciende asco asdf asdfgh asdfjkl asdkjf asdkjh asdkjhasd aseguransa asere asesor asientos asimismo
asistencia asistire asking asome asomo aspiraron asta asuno asunto asustan asuste atenden atender atenderle atenderme
atendi atendia atentos atienda atiendan atiende atinaron atora atorada atorado atrabeso atrasada atrasamela atrasar
atrase atraseme atrasemela atrasemosla atraso atravesaron atraveso atrevo attached atte audio aunq automatica
automaticamente automatico automaticos automovil autoparts autorice autorizo auxilio available avanzar aventon
avienta avientas aviento avion avisa avisaba avisado avisame avisamw avisan avisarles avisarme avisaron avisas avise
aviseme avisenle avisenme away awesome ayrase ayudame ayudan ayudando ayudante ayudar ayudeme ayudenme azulito
babysitter baca bacano baches bahia bail bailando bajada bajame bajan bajando bajarme bajaron bajeme bajen bajenle
bajenme bajitas bajito bajitos bajos balanceada balancear balancearon balanceo balata balero ballet ballpark bambolea
banana banca bandas bando bandwidth bano banos banqueta banshee barbaridad barely baron barrio base baso bastante
basto basura batalla batalle batallo baterias battery bautizo beans bearing begin bello belt belts bendecido bendi
bendita bendito beto better between biblico bicicleta bicis biem bienes bienestar biernes bigote biles billete bills
bingo bird birlos birthday bitte blah blanda blandito blanditos blando bless blessings blinker blinking blocked
bloqueados bloquean bloquear bloqueo blow blue boat boca bodega boiler bola bolas boletos bolita bolsa bolsillo
bombear bombearle bombillito bonete bonita bonjou bonjour bono book boot borde borra borracha borracho borrame borran
borrar borraron borrela borreme borrosa boss botada botado botando bote both boto bowl brake brazo brecas brekes
breks breve brincando brinco brincos brinda bring brinquito broke broma bronca bruh bruja bucks buena buenisimo bujia
bujias bumper bumpers bumps bunch burger burla burlaron burning burra burro buscaba buscado buscame buscamos buscas
busque busquen busquenme busquenos bust busy butter buzz cabal caballero caballo cabecea caben cabeza cabin cables
cabron cachito cacho cadena cadenas caderona cadna caen caer caerles cafecito caidos caigan cajera cajero cajita
cajon cajuela calabaza calavera calcas calcetin calcomania calcomanias calcular calcule calculele caldo calefaccion
calendario calendarios calentandose calenton calentura calidad caliente california calisto call calla callme calma
calor calving camacos camaras cambiadas cambiador cambiados cambiala cambiame cambiamela cambiamelo cambiamos
cambiando cambiara cambiarlas cambiarlo cambiarme cambiela cambieme cambiemelo cambiemos cambienla cambienme
cambienmela came caminar camionero campanas campito canada cancelada cancelado cancelala cancelalo cancelame
cancelamela cancelamos cancelarles cancelaron cancelemela cancelemos cancelenla cancelenme cancelenmelo cancelenos
canceles cancion candela canela canon cansado cansan cansaron canse canselame cant canta cantaros cantas cante cantos
capaz capisco captain capto carcacha carcachita card cards careros carga cargador cargan cargar cargaron carlos
carmen carnal carnavales carne caros carril carrio cart carta cartas cartera casar casas cascabel cascabelea
cascabeleando cascabeleo cases cash casualidad cauchos cazar cebo celeste cena cenicero centavo cercano cerda
cerquita cerrada cerrados cerraron cerro cervezas cesen cesta cette chaco chafa chale chama chamaco chamacos chamo
change changes chanza chao chapa chapin charquito chatarrice chavo cheated checamos checando checaron checked cheers
chele chema chequearan chequearon chequee chequeen chequen chequeo cheques chica chicharron chichon chicos chidos
chief chifla chiflando chiflido chihuahua chillan chillido chilo chin chingando chingar chip chipote chiquita
chiquito chirrido chisguete chisme chispas chisporrotea chistecito chistesito chivo choca chocan chocolate chofer
choice chole chorrea chorrito chorro christmas chueca chueco chulada chulo chupa church chuy ciclistas cielo cientos
cierre cierro cigarro cilindro cincuenta cinturon circulo cirugia citaron citas city ciudadania clac clarito clavadas
clavado clavan clavar clavo claxon click clientes clima clinica cloc clonc clsaes club clunking cobijas cobra
cobraban cobrado cobradores cobrais cobrarian cobrarme cobras cobren cocer coche cocina codigo coge cogio coincide
cojin cola colado colegio colgando colgaron colgo college colmo colonia color colorada colorado columbus come comento
comenzar comercial comida comodo comp companero compania comparar compare comparta compartela comparto competencia
complaints complete completito completos complica complicado componer componga compra comprador comprar comprarlo
compraron compras compraste comprends comprension compresion compresor compro compromiso compu compuesto compusieron
compuso computadora comunica comunicaran comunicarse comunico concesionaria concierto conduciendo conecteme confianza
confio confirma confirmacion confirmadisimo confirmamme confirmamos confirmar confirmarme confirme confirmed
confirmenme conforme conformo confrim confrimar confunde confunden confundi confundiendo confundieron confundio
confundir confundiste confundo conlleva conocen conocido consegui consejos consent consentimiento consideracion
consiente consiga consigo consigue consiguen consiguieron consiste construccion consulte consumo contactar contacte
contacten contactos contador contadora contando contaran contare contener contenga contengan contentisima
contentisimo contestaban contestadora contestan contestando contestar contestara contestarme contestarn contestaron
conteste contesten contesto contextos contiene contienen contra contrae contrario contrasena contratado contratando
control convence convencerme convencieron convencio convenga cool coolant copa copia copmlain coraje coran corazon
coriendo corra corrala corralon corrame corramela corre correa correct corregir corregirlo corremos correos correr
correrla corriendo corrieran corrieron corrijan corro corta cortada cortenle cortesia cortina cortos coser cosita
costado costara costaria costs cotiza cotizacion cotizar cotizaron couldnt count couple covid craamba crac crank
cranks crazy credito credtio cree crei crien crime cristiano criterio crooks crossing cruce cruda crudo cruje
cruzando cruzo cuadra cuadramos cuadrando cuadrar cuadrarlo cuales cuandi cuanta cuarentena cuaresma cuas cubano
cubiertas cubo cubra cubre cubrio cuentan cuente cuenten cuentita cueros cuestan cuestas cuida cuidad cuidado
cuidando cuido culpa culto cumpla cumple cumpleanos cumplen cumpli cumplidores cumplio cumplo cunada cuneta cuota
cupo curioso current curva curvas custodia dado dallas dalo damage danando danaron dane dang dano danos dark darlene
darme daros date dato dave dawg daycare days deal dealers deben deberian decada decepcion decepcionada decepcionado
decia decian decidan decide decidi decidido decidir decile decima decimo decirles decirlo decirme decirselo
declararon declaro declinar dedo dedos dedotes defensa dejala dejalo dejando dejarla dejarles dejarme dejas dejaste
dejela dejemelo dejemos dejemoslo dejenla dejenlo dejenlos dele delete delgadas delia delo demandan demandar
demasiado demasiados demonio demorado demoran demoro denise denle deocupo depara deployed depositen deposito
derechito derecho derretido desactive desaparecio desapuntame desapunteme desarmador desastre desayunado desayunar
desbielo desbloqueeme descansa descanse descansemos descargo descaro descompone descomponer desconectada desconfiada
desconocidos descontenta descontento descuentito desear desee desela desempleado desempleo desesperen desfile
desgaste desgraciado deshaga deshice deshicimos deshuesadero deshuese desinflada desisto desocupado desocupe desocupo
desole desorden desorganizacion desorganizada desorganizados despacio despacito despiertan desprendio destinatario
destino destruyo desuscribir detalle detalles detener detenga detengan detenido detiene detienen detour detras
detuvieron deudas deutsch deveras devolver devolverme devolvi devolvio devuelta devuelva devuelvan devuelvanme
devuelve devuelven devuelvo diablos diagnostico diario diarios dibujito dices diciendo dicto diecinueve diente
dientes diera dieran dies diesel diferencia diferencial different dificil digale digamos digas digito digits digna
diita dijeran dijiste dilata dilatan dilatare dile dimos dineral diosito dipstick dire direccionales directamente
directions directo diria dirty disappointed discapacitados discontinue discos discoteca discount disculpa disculpas
disculpeme disculpen dispare dispiace disponible distancia diste distinto divorcio doblada doblado doblar doblo
docena doctores does doesnt dogs doing doke dokey doki dokie doky doler dolor dolsres domicilio dona donado donamos
dormi dormia dormida dormido dormir doscientas doscientos double doubt down downtown dragging dream drill drive
drives driving drop dsps duallys duda dudas dude duele duena duerma duerme duermen duermo dulce duran durango dure
durisima durisimo durmio duro dying earlier earliest echaba echado echame echan echandole echar echarle echaron
echele echeme eclipse edad edificio educada efectivamente efectivo efecto eggs eighteen eighty either ejemplo
electricista electricos eleven elijo eliminar elimine elimineme eliminen eliminenme ello ellos elses email embarazada
embargaron embarques emergencia empana empaque empeoraron empiecen empieza empresa empty encantada encanto encarga
encargo encargue encender encendio enchufar enchufe enciende encienden encierran encima encontraba encontre encuentra
encuentran encuesta encuestas ended enfadada enferma enfermera enfermos enfriar enganada enganchado enganche englisch
english enlace enmarca enmedio enoja enojada enojado enoje enorme enough enredo enseguida enseno ensucien entender
entendido enterado entere enterito entero enterrando entiende entienden entierran entierro entramos entran entrara
entredicho entregado entregamos entregar entregarian entrego entreguen entrenamiento entrenaran entres entretanto
entretener entretiene enviado enviarme envie envien envios envolver envuelta enyesado equilibrio equipo equivoca
equivocada equivocados equivocan equivocaste eran erase ernesto error escanear escapada escapar escapo escasa escoge
escogemos escoja escojan escojo escolar escondido escriba escribame escribanme escribeme escribiendo escribiendome
escribimos escribio escribire escribirle escrito escritorio escucha escuchan escucho escuelas escupe escupio espacial
espacios espakda espalda espanhol especiales espejo esperaba esperado esperame esperamos esperan esperare esperarlo
esperarme espereme esperenme espicharon esponjoso estaban estabilice establecimiento estacion estacionamiento
estacionando estacionarme estaciono estadia estadios estafa estafado estampilla estampo estancada estara estaremos
estatica estereo estering estetica estimados estimate estrella estrellas estrello estrena estrene estres estribo
estudia estudiando estudiante estudio estufa estupendo estuve estuvieron eterna europeos evening evenings ever every
everything everywhere evre exacta exactas exacto examen example excellent exclamacion exclamation exijo existe exit
expand expensive experience experiencia explicacion explicado explicame explican explicar explicarle explicarme
explicaron explico explikeme explique expliquen expliquenme expresar express extendida extinguidor extra extrana
extrano fabrica fabricante facebook facil facilita factory falar fall fallamos fallando fallar fallecio fallo falo
falsa faltaba faltando faltar faltavan falte falto familiar fantastic faros fastidia fastidias fastidio fatal
favorcito favot feas february feeling felices felicidades felicitarlo felicito fell feos feriado ferry fiebre fiera
fifty fijate fijense fijo fila filter filtros finales finals find fines finished fino fire firmo five flashing flat
flecha flexible flickers floja flojas flojera flojo flojos floreria flores florida flotando flower fluid fluido focos
fonazo foolin forever forma formal formas forme found fracture fraude frayed free fregada fregando fregar frenando
frene frente fresa fresas fresca friday fridays fridya friega friiday frijoles frimorning frist front fuego fuerte
fuertisimo fugas fumo funciona funcionan funde funeral furgoneta furiosa futbol gacha gacho gaklo galletas gallinas
gallo gallos galon gana ganas ganaste gancho gane garaje gasta gastada gastadas gastado gastados gastan gastar
gastare gastarle gastaron gastos gatito gato gemido gentileza getting ghosted gift gimme gira girar giro give gloria
goes golden golpes golpetear gomera gone gonna good goody google gordito gordos gorra gorro gota gotas goteo gotera
grabacion gracia graciassss grada gradua graduacion grandma grandota granizo grateful gravel gravy grax green grillo
grinding gripa gris gritaron griten grito grosera groseria groseros grunido grupo guantera guapo guard guardame
guardan guardando guardarla guarde guarden guardenme guardia guardo guele guero guia guiando guiarme gustan gustara
guste gusten gusttan haber haberlos habiamos habian hablado hablame hablarles hablarlo hablarme hablaron hablele
hablemos hablen hablenle habre hacelo hacemos hacerle hacerse haciendolo hafta hagala hagale hagalo hagame hagamos
hagamosle hagamoslo hagan hahahaha hair hallo halloween handled happen happy hard haria harta harto harvest haven
haya hayan hazme headlight headlights heater heavens hecha hechan hechos heck heic hello help herede herradura
herramienta herramientas hers hervir hhhhhhhhhhg hiciera hicieran hicimos hidraulico hielera hierro hieu high highway
hijos hindi hirviendo historia hitch hjkl hmmmm hoja hojalateria hojalatero hoje hold holder holler home homonimos
honda honesta honestos hood hops horarios horita horitas horitita horrible horses hour hours hoyo htaes http https
hubiera hubieran hubo hueco huela huelen huelga huelo huequito hueso hule humanly humea humeando humillado humito
hump hunde hundio hunting huracan huracanes hurt iban idea ideal ideas identifiquese identify identity idle
ignorancia ignoraron image imagen imagina imaginate imaginese impide importe impressed impuestos inbox incapacitado
incendio incendios incluida incluirme incluyeron income inconforme inconveniente incorrecta indeed indicar infierno
inflable inflada inflado inflan inflaron infle influye info informacion informarle informarles informes informo
inglese iniciar inmigracion inscribame inscribeme inscribir inservible insistan insisten insistir inspection
instalada instalados instalan instalaron instalen installed insurance inteligencia intentar interes interesado
interesan interese interest interested internaron internet intrested inudacion inundacion inundo inutil inventaron
invento invertir invierto invita invitacion invitarme iphone iremos irle irme isla isnt iugalmente jajajaja
jajajajajaja jalan jalando jalandose jalar jalo jalon jaloneando jalonear jalones january javi javis jefa jejeje
jjjkk jobsite jode joder jodieron joke jose jovencita joya jsjsjs juarez jubilacion jubilada jubilado juebes juega
juegos juev jueve juevecito jugamos jugando jugo jugs juguetito juice juicio jumper june junker junkie junkyard
juntando juntaron juntas junte juntos justo juves juzgado kangaroo keep keeps kein kermes khong kids kijan kill kilo
kilometers kilometraje kilometros kind kinda kinder kindly king kizas kkkk knock know kuanto lados ladra ladron
ladrones lamentablemente lamento lampara lana lancha landmark lante laptop laredo larguisima larguisimo latch lately
latter laundromat lavabo lavadito lavado lavador lavadoras lavadores lavan lavanderia lavar lavarlo lavaron leaking
leaks lean leave leche leen leer left leider lento lentos leque letras letrero letritas levanta levanto lewisville
leyendo lfiesaver libera liberar libere libras libres libreta librito libro licuadora ligar ligero lights lija limp
limpia limpiador limpiadores limpiar limpias limpio linda lindo lindos link liquidar lisas list listado listas listed
litro little live lkjn lkjsdf llamadas llamadita llamado llaman llamara llamarme llamaron llamas llamela llamele
llamo llavecita llaveros llegaba llegado llegan llegare llegaremos llegaron llegaste llena llenaron llenen llenos
llevamos llevan llevando llevandoles llevare llevaria llevarla llevarle llevarles llevarme llevaron llevarselo
llevemos llorando llover lloviendo llueva lluvia lluvioso load loaner loca locales localizados location locos lodo
loma lonchera long longer longest look looks loose loses losing loss lote loteria loud lovely lube lucecita lucecitas
luegooo lueguito lugarcito lujo lumbre lunchtime lune lunea lupe lupita luto mabye machine macro madame madre madres
madrugada madrugador madrugar madrugo maestra maestro maintindihan mais make malas malecon malentendido malestar
malisimo malita mall malla malos mamalona mami manager mancha manchada manchado manchas manche manco mandados mandala
mandarin mandarle mandarmelos mandas mandelos mandeme mandemelos mandenlos maneja manejado manejan manejandola
manejandolo manejarlo maneje manera maneras manija manito manjar manos manosos manso mantengo mantenimiento mantienen
manual many manzana manzanas mapa maraca maravilloso marcaba marcame marcan marcando marcaron march marea mari maria
marico mario mark marketplace marquele marquen marrano masa mata matamos mate maternidad matraca matter maximo maxio
maybe mayordomo mayoreo mayuscula mean mecanica mecanicos mechanic meciendo mediados mediante medias medico medicos
medida medios meet mejorando mejore mejores memes memo memorial mencionan menor mensa mensagem mensajeen mensajito
mente mentira mentiras mera mercado merece merezco merry mesesitos messages metal metan metanme mete meterle meti
metido metieron metio metodo metodos metro mezclar michigan michoacan microbio middle midieron midio miel mier mierc
might migracion mijito milagro mileage milimetros military milk million mimos mine minimo minivan mins mintieron
minutitos minuto mira mirada miren miro misc miseria mision mismito missing mistaken mitad mixteco mlies mmhm mnna
mobile mochila mocos mode mojado moldura molesta molestan molestando molestar molestarme moleste molesten molestias
molestos momentito mona monady monday mondays monedas moneditas money monito monitoreado mono monring monterrey month
monton moore mordida morir morn mornign mornings mornng moros morrow moto motores motos mounts mouse move moverlo
movieran movieron movil movio mrco msgs msjs much mucha muchisimas muchos mudamos mudanza mudaron mudnaza mueble
muebles muera muere muerta muerte muertito muerto mueva muevala muevamela muevan muevanla muevanme muevela mueveme
mueven mueves mugroso mula multa multaron multiplique multipunto mundo musica must mute muyyy muyyyy mwen mycket nace
nacho nacio name named nanay naranja natacion natural nave navidades nazca necesidad necesita necesitan necesitar
necesitaria necesitarlo necesite necios needed needs negar negative negativo negociar nena nene nenes neta neutral
nevada nevando never next nice nicht niega niego nietos nieva night niiiic ninas nine ninera ninero ninety nitido
nitrogeno nobody nochebuena nochecita noches nocturno noise none nones noonish noooo norte notar notch nothankyou
nothing notificaciones novedad noventa novia nube nuera nuevamente nuevecitas nuevecito nuevos number numerito
numeros nxet objection obligatorio obras obrigado obtuvieron obvio obviously ochenta oclcok oclock octuvre ocupa
ocupaba ocupada ocupado ocupados ocupando ocupao ocupar ocuparia ocupe ocurra odometro ofendio oferta ofertas
offering ofrecen ofrecer ofrecimiento ofrezcan often ohio oido oigo okas okay okeydokey okie okis ola oler olga olia
oliendo olla olvidado olvidalo olvidarme olvidate olvide olvidelo olvidemos olviden olvidense olvidese ombe onces
only onto onwards oops open opera operacion operada operan operar operarme operaron operator opina optout oracion
oreja orejas organizo original orilla orille oscuro other otras otros outside overslept overtime oxidado oxigeno oyen
pablo paciencia padece padre paga pagando pagina palabra palabras palanca pale pana panaderia panes pantalla panyol
panza papas papeles papi paquete parabrisas parados parale pararan parce parcero parchar parcharon parche parcial
pardo pardon parecen parecer parecia parecio pareja parejito parejo pares park parked parle parlo parpadea parpadean
parpadeando parque parquear parra parrillas parroquia parse partiera partio partir partner pasaba pasadas pasadena
pasadita pasaditas pasadito pasadomanana pasaje pasajero pasala pasale pasamela pasan pasao pasara pasaria pasarla
pasarle pasarlo pasarme pasaron pasarre pasas pasat pasatiempo pascua pasea paseando pasearon paselo pasemela
pasemelo pasemla pasen pasenla pasenme pases pass pastel pasteleria pastillas pastor patada patadas patea patina
patinando patio patos pavos payday peach pedazos pediatra pedido pedidos pedir pedirla pedirme pedro pega pegadito
pegado pegados pegame pegando pegaron pego pegue pelao pelaron peligro pelo pelona pelos penalidad pendejo pendientes
pensamos pensando pensandolo pensar pensare pensarlo pense pension penso penultima perame peras perder perdia perdido
perdiendo perdieron perdio perdonan perdone perdoneme pereza perfect perfectamente perfectly periodico perlas permite
permito peron perrita perrito perron perros personal personas pertenece pesada pescado pesimos pesos petro phone
photo pick pickles pickthe pidale pide piden pidiendo pidio pido piedra piedras piensa pierda pierde pierdo pies pila
pincho pink pinta pintado pintan pintando pintar pinto pintura pique piquito pisa pisado pisar pisca pise pisoton
pisto pistola pita pitch pizca pizza pizzas placa placas place placer plan planear planned plans plantada plantado
plastico plata platicado platicamos platicar platicarlo platico platique platticar playa plaza please plebes plena
pleno plese plomero plumas plumillas plus poca podadora podadoras poddra poderse podes podia podido podra podriamos
podrian podrido polarizados polarizan polarizar polea pollo ponchado pone ponemos ponerla ponerle ponerlo ponerme
ponernos ponga pongala pongale pongamela ponganle ponganme ponle popped porfabor porfas porfi porqueria porra porton
posadas posponer posponerla pospongamelo pospongamos posponla possible posso poste postpone pounds power poyo pozole
practica prada prado precisamente preciso predio predios prefer preference preferencia preguntan preguntando
preguntaran preguntarle preguntarme preguntas pregunte pregunten preguntenle preguntita pregunto prendalos prenden
prendi prendieron preocupados preocuparse preocupen preocupo preparado presentarme presente presento presidents
presion presione presta prestada prestados prestamos prestar prestarme preste presten presupuesto pretextos prevenir
previo previos prima primer primeros principio principios prinsipio prisa private prob problem problemas problems
procesion profe programa promesa promesas prometieron promo promocciones promociones pronta prontito propaganda
propias propina propio proporcionarme prospero protector prox prueba publicidad publique puchica pude pudieran
pudieron puebla puedas puedes puerco puertas puerto puesta puestas puesto pulga pulgadas pulida pulir pulled
punaladas punta puntitos puntualito pura puras puros purrs pusimos pusiste qanto qualquier quarter quebraron quebro
quedaban quedado quedara quedaria quedarme quedaron quehacer quejado quejar quejas quejido quejo quema quemada queman
quemando quemaron queramos querian querria queso questa quick quiera quieres quiet quieto quijada quimica quimico
quimio quinceanera quinientas quinientos quise quisieron quita quitado quitame quitamos quitan quitar quitaria
quitaron quitela quitele quiteme quitenla quizas quote qwerty raices rain rajada rajadita rajas rajo rallar ramadan
ramiro ramo ramon rampa rana ranas rancho ranura rapidos rasguna rasgunido raspa raspada rateros rather ratio ratos
raya rayada rayado rayadura rayar rayon raza razon reached reactivar reactiveme reactiven reactivenme read ready
reagendame reagendar reagendeme real realice realidad realizaron really reanudar rear rebaja rebajita rebasan
rebasaron rebien reboco recado recalienta recall recalls recen recepcion recepcionista receso rechinaba rechinando
rechinar rechinido reciban recibe recibida recibido recibiendo recibire recibirlos reciente recio reclama reclamar
reclame recogen recogeria recogerlo recogio recoja recomendaba recomendacion recomendado recomendar recomende
recomienda recomiendan recommended reconosco reconozco record recordamos recordar recordarme recordatorio records
recorra recorrala recorralo recorramosla recorranla recorre recorremela recorrerla recortaron recuerdame recuerdan
recuerdemelo recuerden recuerdenme recuerdn recuperando recupere reddish reduced refaccion refacciones refiere
refrescos refri refrijerante refund regado regalado regalan regalaron regalen regalo regano registrar registre
registro regla regresa regresamos regresan regresar regresen regresenme regretfully regular reiniciar relajo
relampaguee rellenan rellenar rellenaron rellene relleno reloj remataron remate remind remodelacion remolcarlo
remolcaron remolque remuevanme rendijas renewed renovar rentado rentan rentar rente reojo reparacion reparada
reparado reparan repararon reparo repartiendo repartir reparto repente repo repongan repongo reportando repossessed
representative reprogramame reprogramar repuesta repuesto repusieron reschdule resched reschedule resena reserva
reservacion reservemela reserven resolbieron resolvemos resolvi resolvimos resolvio respectfully respeta respetan
respettos respira respiramos respirar respiro respondan responde responden responderemos responsable restart
restaurante resto resubscribe resuelto resuelva resuelvo resume retirado retire retirenme retiro retomamos retorno
retrasada retrasados retrase retumbando return reunion reves review revisa revisada revisado revisarle revisarlo
revise revisen revisenle reviso revive revoke revoquen rezar rico rides riesgo rifa rifar rifaron rifas rife rines
ring rinon risa riza road robadero robado robar robarme roberto robo robots rodilla rogar rogelio roger rojas rojos
roll rollo rompio ronda roommate rosario rosita rotacion rotada rotan rotaron roto rotten rotulas rough roughly round
roza rozon rozumiem rrrrr ruedas ruede ruego ruge rugen rugiste ruidazo ruidillo rumbos runnin runs ruta sabadito
sabanas sabemos saberlo sabes sabra sabre sabria sabrian saca sacame sacan sacando sacaria sacarle sacarme sacaron
saco said sailing sakenme sakudos salamat saldra saldrian sales salgan salia salido salieron salimos salirme salirse
saliste salita salle salon salpicadera salta saltemos salto saltos saluda saludame saludarlos salude saludes saludo
salva salvador same sandalias sangraron sanguinea santa saqueme saquenme saterday satisfecha sauce savadito savado
scene school schreiben scrap scraping screaming scribe scusi sdfghj season seat sebo secnd seco second security seda
sedancito segnda seguimiento seguimos seguirlo segundos segura seguridad seiro seis seiscientas sellada sellos
semaforo semaforos semaine semanita semanitas semillas sena senado senal senas sencillas send sender sendin sending
seno senores senoria sensibilidad sensor sentada sentadita sentarse sente senti sentida sento sepa sepan separa
separar separo september seran serian seriedad serpentine serra servia service servida servido servir servirle seven
seventeen shadow shakes sharp shcool shes shifts shoot shop shopping shoulder shovel show showed shows shut shuttle
sido sierra siesta siga sign signals signed signo siguio siii siiii silbido silencito silent simona since sings sino
sipi sipo sirree sirvio sirvo sitios sitter skip sleep sleeping slips slot slow slto sluggish smell smells smog smoke
smooth sobra sobran sobrar sobrara sobre sobrecalentando sobrecalento sobres sobrina sobrio social sola solas
soldadura soldaron solicitar solicito solita soltarlo solto sombra sombrero somebody something sometimes somos sonaja
sonando sonar sono soonest sopa sopla soplido sorpresa sorted sorteo sostiene sound spam spamming spongy spreche
spring squeaks stalker star stars starter state stay steam steering steers stereo steve stick sticker sticks stirring
stopall stopped stops storage store stoy strike strut struts stuff suave suavecito suban subasta subastaron suben
subi subida subidas subiendo subieron subio subir subo subscribe sucursal sucursales sucurssales suegros sueldo suelo
suelta sueltan suelte suenan suero suerte suficiente suis suits sumamente summer sundays supermercado supero
supervisor supiera suplico supo supone supplies supuse supuso sure surgio surprise suscribir suscribirme suscripcion
suspendan suspendanlo susto suuper suvscribe suya suyo suyos swap switch tachame tache tacheme tachenme tack tacos
tags tailgate take talk tallado talleres talon talvez tamales tamano tambor tamos tampoco tango tank tanque tanta
tantita tantos tapa tapete tapetes tapiceria tapizado tapo taqueria tarado tardanza tardara tardaria tardarian
tardaron tardeando tarden tardisimo tarea tarifa tarro tasa tatuajes taxi taza tdas techo techos teclas tecnico
teendria tejas tejer tejido tela tele telefonazo telefonearme telephone tell temblando temblar temblor temblorina
temdran temer tempo tempra tempranera tempranero tempranisimo tendran tendras tendre tendria tendrian tenerlo tengas
tenia tenian tenico tenido tenn tennish terca tercer tercera termina terminan terminar terminen termino termometro
terreno terrible testeen testigo tests tetera teusday texas text texteando textearan texteas textee textees texteo
textiar textien thabks than thank thanks thankyou them theres third thnaks three through thrs thru thrusday thumbs
thursday thursdays tickets tickled tictictic tied tiemble tiemblo tienda tienes tierra tijuana till timbreme time
times timing timon tiraba tirame tirandole tirano tire tirones titulo tmrw tocaba tocar tocaran tocaron tocas toco
todays toman tome tomorow tomorrows tono tons took tope topes tops toque toques torcido tormenta tornillo toros
tortas tortilleria tosiendo tosio totales totalled traba trabado trabajado trabajaron trabajito trabajos trabo trac
tracatraca tractor traeme traen trafical traga trago traiga traigan traila trailer trailero traje trajera trancao
tranquilo transmisiones tranza tras trasera traseras traseros traslade traspase trata tratado tratan tratando tratar
trate tratos trece tree treinta trescientas triangulito triangulo trigo trip trocas trok trompa tronaba tronada
tronando tronar tronido tronidos trono truck truco truenan truk tuanis tubo tudo tuerca tuercas tuesday tuesdy
tumbame tumbaron tumbe tune turn turnos turns tusday tutorial tuviera tuvimos tuvo twenty type tysm uber ubicados
ubican ubico unbook under unfollow unica unicos unidades unido uniforme unknown unstop unsub unsubcribe unsubscribe
unsubsribe unsuscribe until urgencia urgia usada usadas usado usados usan usar usen uste utiles vaaaa vaca vacacion
vacantes vaciando vaciar vacio vacios vaina valentin valet valga valia valido valla valle valor vamo vamonos
vanishing vano vanos varias varicela varios varo varon vaso vayan vecinos vehiculos veian veinte veintitantos velando
vello velocidades velocimetro vence vencer vencio venda vende venderlo vendido vendiendo vendieron vending vendo
vendria venga vengas venian venido venimos venir venta ventea ventilas verdecito verdes verdura verguenza
verificacion verlo verlos verse verstehe very vespertino veterano veteranos veterinario vfdn viajando viajar viajo
vibraba vibracion vibran vibrando vibration vibre video vidrios viejas viejita viejito viejitos viena vienen vier
vierne vierned viniendo virar virgen visiita visit visitando visito vispera vista viste viva vivir voice volada
volando volo voltear volveria volvio vomitando vomito voto votre vuela vuelan vuelco vuelo vuelto vuelvame vuelvanlos
vuelve vuelven vuelves wachamos wait waldo wallmart wanda warehouse warning wash wasnt wawa wayyy waze wednesday
wednesdays weds week weekend weeks weird welcome wenesday went wepa were werk what whatever whatevers whatsapp
whatsoever wheel whenever whenevs where wheres which whichever while white whte whyyyy wilco wild will wipers
withdrawn wonderful wont work workers world worries worst wouldnt wrks wrong xmas yarda yeap yendo yerro yesenia yesm
yeso yess yessss yipeta yonque youll youre youtube youve yuppers zafando zafar zafra zanja zapatos zelle zero zumba
zzzz
"""
