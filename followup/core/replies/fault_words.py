"""The words of faults by what they are: parts, feelings, sounds, smells, lamps, fluids, in both languages.

`fault_rules.py` says which of them make a report together. A word that ends in `*` stands for all its endings,
words joined by `_` stand together; the longest phrase wins, and its words do not count beside it.
"""

from __future__ import annotations

from collections.abc import Iterator

CLASSES: dict[str, str] = {
    "IT": ("it she this_thing he"),
    "CAR": (
        "car cars truck trucks van suv vehicle jeep minivan pickup wagon sedan hatchback beater ev hybrid"
        " carro carros coche auto troca troka camioneta vehiculo carrito guagua yipeta jeepeta nave"
        " trokita troquita"
    ),
    "PEDAL": ("pedal pedals brake_pedal middle_pedal pedal_del_freno pedal_de_freno freno el_freno"),
    "BRAKE": (
        "brake brakes breaks rotor rotors caliper calipers freno frenos brekes brecas breques breks"
        " balatas anchors brake_pads brake_line brake_lines brake_hose brake_fluid liquido_de_frenos"
        " stoppers"
    ),
    "HANDBRAKE": ("handbrake hand_brake parking_brake emergency_brake e_brake freno_de_mano freno_de_emergencia"),
    "FEEL": (
        "pressure presion pillow balloon foam memory_foam wet_sponge slow_leak almohada algodon colchon"
        " chicle pesad* tieso tiesa soft softer spong* mush* squish* marshmallow carpet firewall"
        " floorboard sinks sinking sank creeps creeping drops dropping numb mud dead rock_hard brick stiff"
        " twice both_feet two_feet all_the_way way_down farther further jello pudding butter balloon_like"
        " fades fade fading gives_out thumps pulses pulsat* kicks jumps stutter* sticky bland* suav*"
        " aguad* esponjos* floj* hundid* hunde hunden hundio hundiendo larg* duro dura duros duras"
        " durisim* piedra muert* bombear bombearle bombeo respira brinca brinco tiembl* gelatina"
        " no_responde no_sirve no_sirven no_agarra no_agarran no_regresa trabad*"
    ),
    "FEELAFTER": (
        "floor mat nothing hard lower low wood pan agua aire nada fondo piso tapete alfombra suelo al_metal down"
    ),
    "BRAKEFAULT": (
        "bland* suav* aguad* esponjos* piso fondo suelo tapete pressure presion mal_de_frenos grab* lock"
        " locks locked locking nothing dead howl* grumbl* groan* squeal* squeak* screech* grind* gone_to"
        " glow* smok* hot drag* stick sticks sticking stuck fade* fading warped warp burst busted snapped"
        " wobbl* shak* pulsat* judder* metal_on_metal useless toast_now late numb mush* spong* soft"
        " squish* marshmallow scream* moan* rub rubbing weak* rechin* chill* muert* fallan fallando flojos"
        " duros larg* revento rompio fierro_con_fierro metal_con_metal vibran pegad* trabad* amarr*"
        " no_sirven no_sirve no_agarran no_agarra no_jalan no_responden calientes humean truenan jalan"
        " brincan se_acabaron rezar pan piedra aguados nada"
    ),
    "NOT": (
        "cant cannot couldnt wont wouldnt doesnt didnt dont barely hardly never not nearly_didnt"
        " almost_didnt refuses refused stopped_being no casi_no apenas ya_no ni nunca tampoco nunca_quiso"
    ),
    "SLOW": (
        "slow_down slows_down slow slows slowed halt brake braking hold_back detiene detener detenerlo"
        " detenerse frenar frena frenan frene pararlo para_el_carro para_bien"
    ),
    "THROTTLE": ("gas_pedal accelerator throttle acelerador cruise_control control_crucero pedal_del_gas"),
    "STEER": (
        "steering steering_wheel timon volante direccion estering steerin guia manubrio tie_rod tie_rods"
        " steering_rack power_steering ball_joint ball_joints rotula rotulas terminales"
    ),
    "STEERFAULT": (
        "let_go going snapped dead_spot torcid* clunky rough stuttery twitchy wanders drifts vague slop"
        " numb mushy squirrely rechin* truen* tronando zumbando dura durita chilla vencid* stiff stiffer"
        " hard harder heavy heavier tight notch* loose looser sloppy play wander* crooked off_center jump*"
        " jerk* lock* stuck seized shak* vibrat* shimm* wobbl* trembl* nothing two_hands both_hands"
        " both_arms fight fights dead slack sticks sticky binds binding pulls groan* whin* moan* grind*"
        " creak* clunk* squeal* chirp* broke broken hanging duro duros duras durisim* pesad* floj* trabad*"
        " traba traban chuec* juego vibr* tiembl* brinc* se_va no_regresa no_responde no_vuelve jala"
        " golpe* zumb* gime gimen gemido cruj* suelt* sin_control tieso tiesa trono rompio quebro colgando"
        " raro rara hace_ruido temblor"
    ),
    "WHEEL": (
        "wheel wheels rim rims hub tire tires tyre tyres llanta llantas goma gomas rueda ruedas rin rines"
        " neumatico neumaticos caucho cauchos sidewall donut_spare spare_tire refaccion lug lugs lug_nut"
        " lug_nuts birlo birlos tuerca tuercas ball_joint"
    ),
    "WHEELFAULT": (
        "eating slicks slick rip tear cupped chopped uneven unevenly wearing panza panzona clavad*"
        " peeling peeled mordida mordid* estrell* frayed agrietad* poking sank sunk wobb* wobl* alabr*"
        " casi_no_tiene_aire no_tiene_aire poco_aire needs_air needing_air add_air adding_air losing_air"
        " chunk chunks going_down goes_down gone_down slashed shot_out worn_to exploded torcid*"
        " le_echo_aire echarle_aire ponerle_aire inflar inflarla inflarlas deforme deformada chipot*"
        " desgajad* separada se_baja baja_cada flat bulg* bubble lump lumps egg knot goiter nail nails"
        " screw bolt bald cords strings wires wire steel shredded ripped ripping torn split splitting blew"
        " let_go popped deflated deflating leaning crooked squishy hiss* hole gash puncture* losing loses"
        " leaking loose looser looseness missing tilts tilting rock wobbl* wiggl* fell_off falling_off"
        " came_off coming_off folded stabbing rubs rubbing cracked cracking bent wet glow* smok* hum"
        " humming howl* roar* growl* chirp* squeal* squeak* grind* clunk* click* knock* finger_tight"
        " pointing ponch* espich* pinchada pinchado pincho pincharon pinchazo desinfl* baja_baja bola"
        " bolita chipote huevo bulto chichon clavo tornillo pelona pelonas lisa lisas liso lisos alambr*"
        " tela acero cuerdas lona revent* trono suelt* floj* chuec* vaci* sin_aire pica* tirando_aire"
        " pierde_aire raja rajad* cortada cortado zafa* salir salirse salio caer baila bailan ruge rugen"
        " rugido zumb* rechin* truena suena raspa rasp* vidrio grapa en_el_rin en_el_piso en_el_suelo"
        " doblad* perdio tembl* tiembl* brinq* bambole* cayo"
    ),
    "PART": (
        "tread strut_mount radiator_fan driveline valve_stem motor_mount mounts hood_latch latch"
        " crossmember tirante soporte soportes engine motor transmission tranny gearbox clutch axle axles"
        " driveshaft drive_shaft u_joint u_joints cv_joint bearing bearings belt belts serpentine pulley"
        " turbo supercharger exhaust muffler tailpipe tail_pipe manifold catalytic_converter heat_shield"
        " radiator hose hoses water_pump alternator starter battery coil spark_plug plugs strut struts"
        " shocks spring springs suspension control_arm sway_bar bushing bushings differential"
        " transfer_case undercarriage underbody subframe frame fan compressor hood bonnet gas_tank"
        " fuel_tank fuel_line fuel_pump head_gasket oil_pan cylinder cylinders piston lifter timing_chain"
        " timing_belt gasket tailgate front_end rear_end back_end glovebox bumper fender transmision"
        " caja_de_cambios embrague palanca flecha flechas balero baleros rodamiento correa polea escape"
        " mofle mufler catalizador radiador manguera bomba alternador marcha bateria pila bujia bujias"
        " amortiguador amortiguadores muelle muelles resorte bujes diferencial chasis abanico cofre capo"
        " bonete cajuela tanque carter empaque cabina banda parrilla grill grille tapon eje defensa facia"
    ),
    "LOOSE": (
        "hoyo hoyos agujero agujeros agujerad* shredded peeling peeled poking gone frayed rusting leans"
        " mordida estrell* agrietad* desgarrad* vencid* gastadisim* never_shuts_off never_turns_off"
        " torcid* dejo_de dejaron_de no_sirve no_sirven no_funciona fell_apart rattling wobbling whining"
        " grinding clunking squealing howling shot toast kaput fried cooked blown blew ruined split torn"
        " punctured crushed smashed dented_in quema quemo quemad* tronando rechinando zumbando calentando"
        " goteando raja loose tilts tilting crooked bent snapped broke broken cracked burst busted hanging"
        " hangs dangling dragging drags fell_off falling_off falls_off came_off coming_off fell_out let_go"
        " ripped rusted_through hole stabbing swollen seized stuck jammed sparks sparking chewed slips"
        " slipping grabs dead died failing failed smoking shaking leaking gone_out going_out acting_up"
        " screams screaming collapsed sagging sags rusted_out rotted suelt* chuec* doblad* roto rota rotos"
        " rotas rompio quebrad* quebro raja* colgando colgad* arrastr* cayo cayendo zafad* zafo revent*"
        " trabad* traba atorad* atora pegad* muert* murio muere fallando falla fallan hundi* hinchad*"
        " patina patinando tronad* saliendo suelta desprend* botad* no_carga no_aguanta no_amortiguan"
        " no_jala no_enfria zafando soltando despegando quebrando rompiendo desarmando"
    ),
    "LAMPPART": (
        "headlight headlights headlamp headlamps taillight taillights tail_light tail_lights tail_lamp"
        " brake_light brake_lights brake_lamps high_beams low_beams brights blinker blinkers turn_signal"
        " turn_signals faro faros calavera calaveras luces direccionales luz_de_freno luces_de_freno"
        " luz_de_enfrente luces_del_freno foco_de_enfrente los_stop los_stops luz_de_atras luz_trasera"
        " cuartos horn claxon bocina pito wipers limpiaparabrisas_no"
    ),
    "LAMPFAULT": (
        "point pointing points aim crooked hanging loose stopped barely apenas dejo_de dejaron_de no_jala"
        " no_jalan blown blew fuse weak faint yellowish flicker low quemad* quemo out died dead dim dimmer"
        " dims flicker* quit quits stuck cut_out cuts_out went_out goes_out burned_out burnt_out blinks"
        " blinking super_fast fundid* fundio apag* no_prende no_prenden no_enciende no_encienden no_sirve"
        " no_sirven no_alumbran no_alumbra no_funcionan ni_alumbran ni_prenden parpade* bajan titil*"
        " debil* tenue* fallan falla flojas cut not_working doesnt_work dont_work stopped_working"
        " doesnt_come_on wont_come_on isnt_working arent_working"
    ),
    "DASH": ("dash dashboard instrument_cluster gauges speedometer speedo tablero velocimetro"),
    "ICON": (
        "light lights lamp lamps symbol icon picture thing thingy image logo shape shaped indicator foco"
        " foquito luz lucecita lucesita testigo dibujo dibujito simbolo monito bombillo bombillito cosa"
        " figura triangle oil_can genie_lamp teapot aceitera lampara thermometer horseshoe herradura"
        " exclamation admiracion exclamacion triangulo llavecita word letters engine_picture motor engine"
        " maquinita"
    ),
    "COLOR": (
        "red orange yellow amber rojo roja colorado colorada amarillo amarilla ambar naranja anaranjado anaranjada"
    ),
    "LIT": (
        "lit lit_up came_on comes_on coming_on glow glows glowing blinking blinks flash flashes flashing"
        " shining popped_up pops_up showed_up shows_up showing stays_on stays_lit wont_go_off"
        " wont_shut_off went_on turned_on popped_on is_on are_on been_on winking winks on_my_dash"
        " on_the_dash keeps_coming prendio prendido prendida prendidas encendio encendido encendida"
        " aparecio aparece parpade* brilla no_se_apaga me_salio se_quedo_prendido titil* just_came i_got"
        " se_prendio se_me_prendio salio le_salio"
    ),
    "SIGN": (
        "check_engine cel srs abs airbag oil_pressure low_oil stop_engine stop_vehicle reduced_power"
        " traction_light tpms coolant_low engine_symbol motor_symbol engine_light exclamation_point"
        " exclamation_mark genie_lamp oil_can tire_light horseshoe_light signo_de_admiracion brake_warning"
        " high_voltage limp_mode modo_de_emergencia"
    ),
    "GAUGE": (
        "temp_thing heat_gauge temp_needle needle gauge temp temperature temp_gauge thermometer aguja"
        " termometro temperatura medidor marcador_de_calor"
    ),
    "HIGH": (
        "past_normal above_normal past_halfway above_half past_half maxim* maxio al_maximo maximo red h"
        " hot high pinned pegged climbing climbs climbed maxed past_the above_the top rojo roja colorado"
        " tope arriba subio sube subiendo alta altisima max limite way_up buried redline"
    ),
    "HOTPART": (
        "sizzling steaming red_hot burning_up overheats recalient* sobrecal* ardiendo too_hot"
        " hot_to_touch boiling boiled boiled_over glowing scalding hirviendo hierve caliente calientes"
        " melted melting derretid* toasty cooked overheating smoldering al_rojo_vivo"
    ),
    "SMELL": (
        "stench stinky aroma scent whiffs apestando oliendo olorcito tufo hediondo hiede peste_a smell"
        " smells smelled smelling smelt stink stinks stank reek reeks odor odour fumes whiff huele huelo"
        " olia oler olor apesta peste"
    ),
    "SCENT": (
        "campfire clutch barbecue bbq ammonia paint glue crayons vinegar popcorn iron tar sulphur tires"
        " tire nail_polish matches propane kerosene cooked scorched singed charcoal coolant rotting leña"
        " cera barniz fierro lumbre llanta frenos balatas solvente thinner asado bateria burn* gas"
        " gasoline petrol fuel smoke sweet syrup maple rubber plastic rotten egg eggs sulfur exhaust"
        " electrical wire wires wiring chemical chemistry match matchstick toast toasted hair melted oil"
        " fishy fish antifreeze diesel hot pancakes skunk quemad* quema quemand* gasolina humo hule"
        " plastico dulce miel huevo huevos quimico cable cables caucho pescado podrido crudo calcetin"
        " aceite raro feo acido balata azufre gas_station"
    ),
    "SMOKE": (
        "nube nubes nubarron nublazon haze fuming puff puffing billow* plume smoulder* ahumando ahum*"
        " humazo fumarola vaho smoke smokes smoky smoldering humo humito humareda humea humeando humeaba"
        " steam steaming steams vapor puffs clouds flame flames sparks spark lumbre candela chispas chispa"
        " chisporrotea llamas embers echando_humo smokes_like"
    ),
    "FLUID": (
        "oil coolant antifreeze fluid water liquid goo stuff gas diesel aceite liquido anticongelante"
        " agua gasolina refrigerante transmission_fluid power_steering_fluid syrup slime brake_fluid"
    ),
    "LEAK": (
        "slick escupio escupiendo avienta aviento tiro_todo gotitas manchas chisguete chisguetes hilito"
        " charquito regado regada regadero empties puddling weep* ooz* trickl* sprinkl* escurrim* goteand*"
        " vaciando leak leaks leaked leaking leaky drip drips dripping dripped puddle puddles spot spots"
        " stain stains goo gunk all_over everywhere trail pissing puking puke spew* spit spits spitting"
        " dribbl* seep* oozing gush* spraying sprays charco charcos gota gotas gotea gotean goteo goteando"
        " gotera chorrea chorro chorreando escurr* fuga fugas derram* mancha tirando tira bota botando"
        " escupe se_le_sale se_sale saliendo drops rajad*"
    ),
    "UNDER": (
        "street road calle banqueta under underneath driveway garage carport beneath below where_i_park"
        " parking_spot parking_space ground debajo abajo cochera garaje piso suelo estacionamiento"
    ),
    "LOWNESS": (
        "disappears disappearing disappeared vanishes vanishing keeps_going_down always_low low_again"
        " runs_low running_low bone_dry empty dropping drops_overnight gone_again bajo_otra_vez baja_mucho"
        " se_baja se_acaba se_desaparece desaparece vacio vacia"
    ),
    "SOUND": (
        "ping pings pinging tapping tappet tappets ticky pega pegando sing sings singing suea hueco hueca"
        " rozon fierros latas piedras squawk* whoosh* whump wump raspy rasping scratching scratchy"
        " chatter* chug* putter* thwack slap slaps slapping snapping crackl* pounding hammering drumming"
        " plink* burbl* belch* wheez* shrill jangl* tinkl* clapping booming boom growly clunky bzzz chirpy"
        " clicky squeaky squealy whiny knocky rumbly rattly beeping beeps dinging chasquid* chasquea*"
        " crepita estruendo estallido estallidos sisea siseo grunid* grune aull* retumb* castanet*"
        " cencerr* campane* tabletea chicharra grillo abejorro pajarito rechinad* crujir chillar zumbar"
        " tronar rechinar traqueo martill* golpetear raspon ronronea tamborea choca_algo cadena"
        " tornillos_sueltos tracatraca pujido puja grumbl* groan* moan* howl* growl* hum hums humming"
        " whin* whir* click clicks clicking tick ticks ticking clunk* clank* clack* thud* thump* thunk*"
        " bang bangs banging pop pops popping knock knocks knocking rattl* hiss* gurgl* whistle whistles"
        " whistling roar* rumbl* buzz buzzes buzzing creak* crunch* squeal* squeak* screech* chirp* scrape"
        " scrapes scraping rub rubs rubbing grind grinds grinding grindy jingl* tinny flapping clatter*"
        " wail* scream screams screaming shriek* warbl* drone droning noise noises noisy racket"
        " metal_on_metal bag_of_hammers bag_of_marbles ruido ruidos ruidito ruidillo ruidazo sonido suena"
        " suenan sonando truena truenan tronido tronidos tronando trono rechin* chilla chillan chillando"
        " chillido chillidos chirri* zumba zumban zumbido zumbando golpetea* golpeteo golpe golpes golpea"
        " golpeando cruje crujen crujido crujidos crujiendo ruge rugen rugido silba silbido silban chifla"
        " chiflido chiflando cascabel* matraca matraquea* sonaja maraca traquetea* traqueteo gemido gime"
        " quejido quejidos raspa raspan raspando rozando roza clac cloc clonc toc tac trac cuas crac"
        " tronazo fierro_con_fierro metal_con_metal se_oye se_oyen se_escucha ronca ronquido aulla pita"
        " pitido suene truene rechine zumbe cruja ruidote goes_er goes_err goes_gr goes_grr goes_br goes_brr goes_vr"
        " goes_vrr goes_wr goes_eek goes_rr goes_ur goes_urr goes_skr goes_whir went_er went_gr went_br going_er"
        " going_gr"
        " going_br makes_er"
    ),
    "SHAKE": (
        "patea patean cocea ladea wallow* lean leans skids skidding floats floating pogo rocks rocking"
        " twitchy twitches tremor tremors lags lagging lunges chugs bogs bogging lugs choppy jumpy jolty"
        " trembly wobbly jiggl* wiggl* tirita saltea zarandea vibrando trepida cimbrea culebrea zigzag*"
        " menea meneo baila bailando temblar vibrar brincar jalonear shake shakes shaking shaky shook"
        " shudder* shimmy shimmies shimmying vibrat* wobbl* judder* trembl* bounce bounces bouncy bouncing"
        " sways swaying weave weaves weaving wanders wandering jerk jerks jerking jerky lurch* buck bucks"
        " bucking hops hopping lunge* jolts jolting quiver* jitter* fishtail* hiccup* cough coughs"
        " coughing sputter* stutter* surges surging hesitates sags ripples tiembl* temblando temblor*"
        " temblequ* vibra vibran vibracion brinca brincan brinco brincos brinquito brincotea salta saltos"
        " jalonea* jalones tironea* tirones cabecea* bambole* bailotea sacude sacudidas meciendo mece"
        " zangolote* cimbra patada patadas rebota tosiendo tose corcovea vibre tiemble brinque jalonee"
        " sacuda dips nosedives nose_dives dives pitches squats bottoms_out bottoming_out"
    ),
    "HEARING": (
        "se_oye se_oyen se_escucha se_escuchan se_le_oye se_le_escucha oigo escucho oye hear heard"
        " hearing makes making noise ruido"
    ),
    "NOTHING": ("nothing_happens nothing_happened no_response"),
    "SAFETY": (
        "seatbelt seatbelts seat_belt seat_belts cinturon cinturones horn claxon wipers limpiadores"
        " mirror espejo airbag defroster parabrisas windshield radiator_fan fan abanico abs"
    ),
    "FAILV": ("falla fallan fallar misses skips acts_up acting_up acts_weird acts_funny stumbles cascabelea"),
    "HEARD": ("sound sounds sounded sounding"),
    "LIKENESS": ("like_a like_an like_something como_un como_una as_if como_si"),
    "VEER": (
        "slides sliding tugs tugging yanks leans swerves swerving crabs edges floats dragging drags tira"
        " jalaba tiraba inclina recuesta drift drifts drifting veer* wander* weave* weaving steers heads"
        " darts dives goes_sideways pulls pulling jala jale jalar carga ladea desvia se_va"
        " cambia_de_carril"
    ),
    "SIDE": (
        "centerline line oncoming side shoulder banqueta orilla ladito lane lanes left right curb ditch"
        " sideways izquierda derecha lado lados cuneta carril solo solito"
    ),
    "STALL": (
        "dies_out killed shuts chokes sputters_out se_muere_sola se_detiene stall stalls stalled stalling"
        " conks conked quits cuts_out cut_out cutting_out shuts_off shut_off shutting_off shuts_down dies"
        " ahoga se_apaga se_me_apaga apagarse apagar calla se_muere se_me_muere durmio se_me_durmio"
        " se_me_quedo se_le_quedo se_apago se_me_apago"
    ),
    "GEAR": (
        "shifts shifting reverse palanca_de_cambios la_reversa sobremarcha overdrive cambio gear gears"
        " into_gear in_gear out_of_gear into_reverse in_reverse into_drive in_drive into_park in_park"
        " into_second into_third into_first in_second in_third in_fourth in_fifth out_of_third"
        " out_of_second out_of_fourth second_gear third_gear first_gear cambios velocidad velocidades"
        " reversa en_segunda en_tercera en_drive en_primera en_park de_park meto_drive palanca shifter"
        " four_wheel_drive"
    ),
    "GEARFAULT": (
        "gone takes_forever slow_to delays delayed late hard_to lags cuesta brinca sale salta batalla"
        " hesitates slow thunk* shudder* no_mete no_quiere rechina zumba se_bota se_sale slip slips"
        " slipped slipping slam slams slammed jump jumps pop pops popped kick kicks kicked grind grinds"
        " grinding stuck clunk* bang* thud hunts hunting wont doesnt refuses jerk* crunch* no_entra"
        " no_entran no_agarra traba trabada pegado pegada patada cruje patina golpe bota truena nomas"
        " atora atorado brusco tarda rolled rolls gravel stir stirring"
    ),
    "OPENING": ("hood bonnet door doors hatch trunk tailgate seat liftgate cofre capo bonete puerta cajuela asiento"),
    "OPENED": (
        "popped_open flew_open swung_open flew_up swings_open pops_open opens_by_itself wont_close"
        " wont_latch doesnt_latch wont_stay slides slid falls se_abre se_abrio no_cierra no_abre suelto"
        " suelta se_mueve not_attached"
    ),
    "PLACE": (
        "wheel_well floorboards engine_bay glove_box column footwell trunk back_seat below dashboard"
        " consola tablero parte_de_abajo copiloto chofer front rear back underneath under beneath behind"
        " left right corner passenger driver_side middle inside up_front adelante enfrente atras abajo"
        " debajo trasera trasero delantera delantero adentro alante ventilas vents cabin cab interior"
        " radio"
    ),
    "GOOD": ("nice fine great smooth smoothly good quiet perfect perfectly bien perfecto suavecito excelente awesome"),
}

OTHERS = (
    "sitter babysitter nanny helper coworker bike bikes bicycle bici bicicleta tricycle stroller computer"
    " computers laptop pc website server printer washer washing_machine dryer fridge refrigerator freezer"
    " oven stove furnace sink faucet toilet kitchen bathroom roof ceiling basement mower lawnmower"
    " lawn_mower weedwhacker chainsaw generator boat golf_cart dishwasher drum drums knee knees hip hips"
    " stomach belly tummy neck bones voice wallet marriage stocks market smoke_detector smoke_detectors"
    " smoke_alarm fire_alarm neighbor_dog upstairs phone cell iphone tablet lavadora secadora refri"
    " refrigerador estufa podadora techo cocina computadora celular telefono rodilla rodillas espalda"
    " panza tambor plomero bateria_del_celular boiler lavabo inodoro tuberia tele musica motorcycle moto"
    " bicis barbecue brisket finances financially money wifi alarm_clock bank jar dolar dinero presupuesto"
    " bolsillo cartera"
)
"""What may leak, shake, die or make noise and is no car."""
# functions
_NEGATIONS = "doesnt wont dont cant isnt never barely hardly didnt couldnt wouldnt stopped quit"
_FUNCTIONS = (
    "hold holds holding grip grips gripping bite bites biting release releases releasing retract retracts"
    " latch latches latching catch catches engage engages engaging respond responds responding charge charges"
    " charging close closes lock locks buckle buckles click return returns disengage steer accelerate rev fire"
    " crank work works working cool cools spin spins move moves light lights defrost warm build react reacts"
    " come_back go_back turn_off shut_off go_off let_go line_up stay_shut stay_closed stay_up stay_in stay_lit"
    " go_on come_on"
)
_NEGACIONES = "no|ya no|casi no|apenas|nunca|tampoco|dejo de|dejaron de|no me|no le|ya no me|ya ni"
_FUNCIONES = (
    "agarra agarran sirve sirven funciona funcionan jala jalan responde responden prende prenden abrocha"
    " abrochan cierra cierran carga frena frenan aguanta aguantan detiene sostiene regresa enfria amortigua"
    " amortiguan gira giran apaga alumbra alumbran enciende encienden entra entran suelta mueve servir"
    " funcionar prender abre quiere obedece"
)


def fails() -> Iterator[str]:
    """What a part does not do: `wont latch`, `ya no agarra`."""
    for denial in _NEGATIONS.split():
        for function in _FUNCTIONS.split():
            yield f"{denial} {function}".replace("_", " ")
    for denial in _NEGACIONES.split("|"):
        for function in _FUNCIONES.split():
            yield f"{denial} {function}"
