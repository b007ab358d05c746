"""What speaks for and against `where`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "where"
BIAS = -183
WEIGHTS = """\
#abad:31 #abaj:58 #abie:43 #abla:-24 #abre:205 #acar:-28 #acat:-23 #acio:52 #acro:-22 #addr:119 #ados:-33 #adre:37
#agar:31 #airp:22 #ajan:101 #ales:47 #alig:-22 #alle:158 #anda:91 #ande:33 #andm:27 #ando:-74 #arde:-31 #ards:-24
#argi:-38 #aria:-25 #arki:-42 #arly:49 #aron:49 #arqu:34 #arro:43 #arte:22 #asta:33 #atan:-61 #atio:48 #atra:36
#atur:34 #avor:40 #bado:31 #baja:84 #bajo:-39 #biar:34 #bica:90 #bien:-44 #bier:49 #blan:-23 #blue:34 #body:22
#brak:-27 #bren:213 #brid:27 #buil:43 #caci:65 #caer:22 #call:70 #canc:-27 #cant:38 #caro:-29 #cati:60 #ccio:54
#cele:-22 #cerr:49 #char:-47 #chec:-46 #cibe:37 #cier:61 #cion:103 #clos:87 #come:35 #como:-30 #cont:-73 #crib:-49
#ctio:33 #cual:136 #cuen:22 #culp:-49 #dame:52 #days:34 #ddre:119 #deje:-26 #dejo:-23 #deme:22 #desd:39 #dias:33
#ding:32 #dire:93 #disc:-50 #doin:-24 #domi:62 #dond:63 #donu:27 #door:-34 #dres:161 #driv:-29 #drop:62 #dura:-27
#eare:22 #earl:28 #ease:61 #east:27 #eblo:32 #ebod:25 #ecci:52 #ecib:30 #ecti:35 #edan:35 #edes:28 #eeke:-43
#efer:-22 #egar:-23 #eken:-43 #emin:28 #emor:27 #empr:30 #encu:27 #engo:-26 #enid:23 #enos:-27 #ente:42 #entr:128
#ents:-22 #erda:48 #eria:39 #erra:124 #erst:25 #erto:73 #escr:-46 #esde:39 #este:-44 #even:52 #eves:-22 #eway:33
#exit:62 #favo:40 #find:27 #firs:-33 #frid:-63 #from:31 #fron:41 #garr:32 #gast:-68 #ging:-39 #gnme:-22 #guen:101
#guys:33 #hace:-40 #harg:-45 #hast:102 #have:-68 #heco:-22 #here:68 #hese:-77 #hich:109 #hiri:-61 #hood:-56 #hora:115
#huma:-34 #iaro:37 #icac:66 #iday:-53 #idge:28 #iend:32 #ierr:69 #iert:55 #ight:34 #ignm:-22 #igue:115 #ildi:43
#info:-69 #ingo:53 #inte:26 #inut:-30 #irec:93 #ires:-39 #irin:-62 #irpo:22 #irst:-33 #iscu:-49 #isma:36 #ismo:62
#kend:-43 #keys:-23 #king:-81 #know:-50 #lace:48 #lado:-74 #land:28 #late:112 #ldin:43 #leas:67 #lega:-23 #lego:-40
#lema:-25 #lida:30 #lign:-22 #list:-29 #lleg:-59 #lley:47 #loca:182 #lock:-27 #lose:69 #losi:23 #lost:22 #luga:73
#lunc:27 #main:74 #mall:27 #mand:103 #many:-159 #mark:29 #mebo:25 #ment:-33 #mess:-22 #mind:33 #ming:46 #minu:-30
#mism:98 #morr:26 #moto:-25 #move:53 #much:-28 #ncel:-26 #ncue:27 #ndam:48 #nday:57 #ndem:25 #ndma:27 #ngos:42
#nida:23 #nloc:-25 #nmen:-22 #nort:74 #nter:30 #ntra:29 #ntre:-25 #ntro:56 #oble:-26 #ocal:74 #ocat:107 #oing:-41
#omeb:25 #omin:47 #omor:26 #onde:57 #only:-54 #ontr:-67 #onut:27 #oors:-66 #oppe:-59 #orar:30 #oras:22 #orro:25
#orth:62 #osin:23 #otro:-27 #over:31 #ower:22 #park:-52 #pasa:48 #past:39 #peni:-33 #pens:-29 #plac:43 #plea:62
#popp:-55 #port:36 #pped:-56 #pref:-25 #prob:-22 #pueb:32 #pued:-30 #puen:24 #puer:32 #pull:30 #qued:-72 #rada:33
#rake:-26 #ranc:59 #rari:30 #raro:47 #rata:-62 #rato:-24 #rday:26 #recc:53 #rect:40 #reet:67 #refe:-22 #remi:28
#ress:158 #rgin:-38 #ribe:-45 #rida:-63 #ridg:28 #ring:-56 #rkin:-45 #road:-73 #robl:-25 #ront:39 #rpor:22 #rran:71
#rrar:48 #rrow:26 #rsta:26 #rtos:49 #rumb:30 #saba:31 #saca:-26 #sale:29 #same:34 #satu:27 #scri:-49 #scul:-49
#sday:-28 #send:86 #sent:-26 #shop:25 #show:22 #shut:66 #side:107 #sigu:112 #sing:25 #some:28 #stad:-62 #stan:58
#star:-30 #ster:22 #stil:70 #stop:-25 #stre:66 #sund:58 #tada:-26 #tado:-44 #take:-26 #tand:-61 #tard:-32 #tari:-25
#tate:27 #tede:28 #teng:-28 #text:-27 #that:-23 #then:-27 #ther:26 #thes:-77 #they:-26 #this:-65 #thou:24 #till:100
#time:54 #ting:-23 #tion:88 #toda:35 #tomo:24 #towe:28 #town:60 #trad:31 #tran:47 #tras:34 #trat:-62 #tree:66
#tues:-22 #turd:27 #turn:-124 #ubic:90 #uebl:32 #ueda:-90 #uent:46 #uert:31 #ueve:-30 #ugar:73 #uier:24 #uild:43
#ulpe:-48 #uman:-34 #umbo:31 #unch:27 #unda:52 #unlo:-25 #urda:27 #vaca:-24 #veni:58 #wait:-38 #wate:22 #week:-29
#what:24 #when:-79 #wher:39 #whic:115 #wifi:-47 #will:-23 #yeah:28 #your:135 %again_later%agree:-29
%again_later%elsewhere:-26 %again_later%how_long:62 %again_later%lift:-28 %again_later%place:53
%again_later%question:61 %again_later%refuse:23 %again_later%shift_it:-33 %again_later%thanks:23 %agree%bring:-50
%agree%call_off:-35 %agree%do_it:-27 %agree%elsewhere:30 %agree%fails:-27 %agree%family:25 %agree%lift:-24
%agree%opening:119 %agree%place:42 %agree%question:52 %away:73 %away%call_off:-22 %away%car_part:28 %away%do_it:22
%away%elsewhere:86 %away%question:102 %bad:-52 %bad%place:-25 %bad%question:-22 %bring:61 %bring%call_off:51
%bring%car_part:32 %bring%do_it:79 %bring%leak:26 %bring%leave_me:-33 %bring%lift:-34 %bring%question:47
%bring%refuse:-34 %busy:-35 %busy%place:-35 %busy%question:-26 %call_off%car_part:29 %call_off%elsewhere:-29
%call_off%family:25 %call_off%how_long:33 %call_off%leave_me:-31 %call_off%message:-26 %call_off%on_way:-27
%call_off%opening:34 %call_off%place:-70 %call_off%staff:22 %car:-50 %car_part:-34 %car_part%fails:-93
%car_part%money:46 %car_part%noise:-39 %car_part%question:-110 %car_part%shift_it:31 %car_part%who:26 %do_it%leak:23
%do_it%place:-80 %do_it%question:-50 %do_it%refuse:25 %do_it%shift_it:60 %doubt:23 %doubt%place:26 %elsewhere:79
%elsewhere%on_way:30 %elsewhere%place:63 %elsewhere%question:-24 %elsewhere%staff:-36 %elsewhere%who:35 %fails:-62
%fails%how_long:-37 %fails%opening:28 %fails%place:-104 %fails%question:26 %family:-50 %family%place:-24
%family%question:-27 %family%refuse:43 %gone_car:-69 %gone_car%place:-26 %how_long:-30 %how_long%lift:-31
%how_long%money:52 %how_long%on_way:-22 %how_long%opening:188 %how_long%place:-32 %how_long%question:34
%how_long%shift_it:34 %how_long%staff:39 %how_long%wrong_one:-29 %leave_me:-89 %leave_me%place:-25 %lift:-97
%lift%opening:-44 %lift%place:-26 %machine:-130 %machine%staff:-41 %meaning:-80 %meaning%place:-32
%meaning%question:-56 %message:-84 %message%place:-36 %message%question:-49 %money:-49 %money%opening:45
%money%question:-89 %noise:-80 %noise%place:-50 %noise%question:-42 %on_way:-36 %on_way%opening:68
%on_way%question:209 %on_way%staff:53 %on_way%wrong_one:24 %opening:386 %opening%question:168 %opening%refuse:82
%opening%season:44 %opening%shift_it:32 %opening%staff:102 %pay_day:-64 %pay_day%question:-35 %phone%place:25
%phone%question:27 %phone%refuse:-22 %place:380 %place%question:269 %place%season:-24 %place%staff:66
%place%start_again:52 %place%who:91 %question:115 %question%season:-34 %question%shift_it:31 %question%thanks:34
%question%who:-70 %question%wrong_one:30 %refuse%shift_it:27 %season:26 %shift_it:46 %staff:44 %staff%wrong_one:24
%wrong_one:-33 @?:146 @after_visit:-68 @car:-72 @confirm_stop:-28 @day:53 @nothing:27 @odometer:-65 @offers:33
@time:48 @walk_in:53 ^_a:27 ^_abren:61 ^_and:-59 ^_are:43 ^_como:77 ^_cuanto:26 ^_de:-149 ^_deje:-25 ^_did:47
^_disculpe:-48 ^_do:-34 ^_donde:38 ^_drop:28 ^_el:-35 ^_en:47 ^_hasta:61 ^_hours:59 ^_how:28 ^_i:-47 ^_id:-31
^_it:-29 ^_la:-97 ^_llego:-71 ^_los:-30 ^_lost:24 ^_me:70 ^_my:-57 ^_no:44 ^_open:51 ^_please:-23 ^_por:40 ^_price:28
^_puedo:-29 ^_que:-40 ^_saturday:-25 ^_send:82 ^_the:-77 ^_trabajan:43 ^_what:-80 ^_where:-114 ^_which:45 ^_who:-47
^_why:-54 ^_y:-34 ^_your:-24 a__horas:39 a_bot:-74 a_que:52 abiertos:46 abren:213 abren_$:42 abren_el:23 abren_los:27
abren_manana:23 across:-22 address:119 address_$:63 agarro:34 ahi:-22 airport:22 al:33 alley:47 an:-35 an_opening:-22
and:69 and__are:-50 and__i:27 and__is:24 and_you:-56 are:141 are_$:-63 are__a:-84 are__charging:-35 are__closed:26
are__from:28 are__hours:33 are__in:47 are__on:75 are__open:107 are__still:49 are__there:78 are_you:227 are_your:39
at:64 at_or:54 atras:25 avenida:23 bay:25 be:-64 be_there:-25 before_$:33 before__open:-28 before_you:-44
behind_the:47 bien:-50 blue:34 bot:-74 bot_$:-74 bridge:29 building:43 by:109 by__mall:29 by_the:137 calle:83
cambiaron:37 can:23 can__come:28 can__do:-36 can_i:75 can_you:-30 cant:38 cant__you:25 car:-34 cards:-23 cards_$:-23
cerraron:49 charging:-38 checo:-22 cierran:74 cierran_$:23 close:57 come:35 como:-30 como_llego:101 con:-23 cross:24
cross_street:24 cual:122 cual__es:31 cual__su:32 cual_de:32 cual_es:42 cuanto:22 cuanto__y:37 days__you:26 de:-48
de__dos:33 de__es:-70 de__me:-49 de__son:-46 de_donde:-206 de_la:52 de_las:32 de_noche:23 de_siempre:23 de_ustedes:27
deje:-23 dejo:-23 del:46 desde:39 desde_el:23 dia:-26 dias:33 did:-54 did__get:-72 did__move:54 did_you:-37
direccion:53 direccion_$:70 direccion__favor:38 direccion_por:38 directions:41 disculpe:-48 do:108 do_$:-33
do__close:58 do__get:122 do__guys:-23 do__know:-44 do__need:-23 do__open:61 do__shut:57 do__turn:-41 do_i:142
do_you:86 doing:-24 domingos:42 domingos_$:47 donde:47 donde__escriben:-41 donde_es:25 donde_estan:78 donde_me:-34
donde_quedan:31 donut:27 door:32 doors:-66 doors_open:-47 dos:22 dos__es:38 drive:-25 drop:70 drop_it:37 drop_me:26
due:-26 dura:-31 dura_$:-27 early:57 el:111 el__de:41 el__dia:-28 el__en:-25 el_de:34 el_mismo:58 el_taller:40 en:133
en_$:-29 en__calle:29 en__manana:-24 en__mismo:86 en__parte:23 en__rato:-23 en_cual:48 en_el:90 en_otro:-31
en_que:112 en_un:-24 encuentro:27 entrada:34 entrance:53 entro:34 entro_$:30 es:158 es_$:72 es__horario:26 es__o:22
es_el:34 es_en:22 es_este:-33 es_gratis:-23 es_la:40 es_por:29 es_su:40 escriben:-42 escriben_$:-41 eso:-52 eso_$:-33
esta_bien:-28 estan:60 estan_$:70 estan__el:26 estan_abiertos:46 estaria:-24 este:-42 este_numero:-23 exit:62 far:24
far__you:27 far_are:27 favor:42 favor_$:36 find:28 find_you:40 first:-33 for:30 friday:-60 from:31 from_the:74
front:41 front_$:41 gastadas:-24 get:69 get__you:72 get_my:-69 get_there:105 get_to:80 got:-50 got_$:-24 guys_$:-45
guys_do:-24 guys_open:39 hace:-23 hasta:102 hasta__hora:125 hasta_que:102 have:-63 hiring:-61 hood:-56 hora:64
hora_abren:52 hora_cierran:50 hora_estan:28 hora_me:-23 hora_que:-24 horario:38 horas:22 hours_is:-30 how__are:70
how__can:25 how__hours:-157 how__i:82 how_do:76 how_far:30 how_late:88 how_long:-28 how_many:-158 human:-34 i:47
i__it:30 i__only:-29 i__there:73 i__these:-57 i__to:47 i__up:40 i__you:-28 i_can:-28 i_come:55 i_drop:30 i_get:123
i_got:-22 i_have:-22 i_know:-40 i_pull:33 i_turn:-70 i_use:34 id:-44 id__the:-24 if:-38 if__open:-32 ill:-30 in_$:89
in_the:-47 info:-68 info_$:-68 interstate:26 is:45 is__a:-33 is__address:51 is__at:-37 is__hours:22 is__labor:-22
is__open:-65 is__the:101 is__there:25 is__wifi:-30 is_friday:-48 is_it:112 is_the:42 is_there:-26 is_this:-46
is_thursday:-44 is_your:88 it_$:-23 it__a:28 it__of:26 it__or:22 it_off:31 it_the:65 keys:-23 know:-50 know_you:-38
la:84 la__esta:-30 la__que:-40 la__se:-58 la_direccion:-36 la_entrada:31 la_hora:-37 la_manana:-34 la_misma:36
la_ubicacion:61 lado:-68 lado_$:-30 las_$:-22 las_dos:26 last_time:-23 late:112 late__i:43 late__you:44 late_are:51
le:-24 llego:-40 llego_$:32 llego_como:-33 llego_en:-30 lo:-90 local:63 location:87 location_$:49 lol:-34 lol_$:-26
los:47 los_domingos:38 los_frenos:-31 lost:22 lot:-51 lugar:73 lugar_$:50 lunch:27 main:74 mal:-26 mall:30 mall_$:36
manana_$:-31 manda:50 mandame:51 many:-159 many__is:-29 many_hours:-155 me_$:-32 me__la:99 me_a:77 me_escriben:-42
me_manda:51 me_pasa:45 me_queda:-22 me_your:24 mi:-23 min:-40 misma:36 mismo:62 mismo_dia:-28 move:59 my:-137
my_hood:-40 my_info:-67 need:-24 new:31 no_gracias:23 north:62 now_$:33 numero_$:-34 o:88 o__de:34 o_el:24 of:24
of_your:39 off:-42 off_$:-53 on:113 on__road:-50 on_saturdays:28 one:70 one__the:30 only:-54 open:51 open_$:-173
open__the:-38 open_tomorrow:22 opening:-26 opens:-26 or:152 or_$:56 or__you:23 or_the:47 otro:-25 otro__mas:25
otro_lado:-28 out:42 out_front:35 over:38 over__the:35 over_by:37 parking:-42 parking_lot:-30 pasa:41 past:39 pin:156
place:44 please:62 please_$:71 popped:-55 por:96 por__calle:23 por__rumbo:28 por_cual:34 por_donde:72 por_favor:34
price:33 problema:-25 pueblo:32 puente:24 pull:31 que:35 que_$:-36 que__abren:62 que__cierran:59 que__eso:-28
que__estan:62 que__puedo:31 que__reciben:37 que__tienen:37 que_calle:37 que_dias:25 que_es:-43 que_hora:135
que_horario:34 que_horas:39 que_me:-35 que_parte:24 que_tan:-48 queda:-117 queda_$:-54 queda_el:-25 quedan:51
quedan_$:23 reciben:37 remind:31 remind_me:32 right_$:29 road:-62 road_$:-48 rumbo:27 sabado_$:23 sabado__la:-27
salida:27 same:23 same__as:27 sat:25 saturday:36 saturday_hours:47 se:-26 send:86 send__a:53 send_me:77 shop_$:47
shop__the:36 shop__this:-50 shop_is:-29 show:23 shut:72 shut_$:47 side:120 side_$:38 side__the:36 side_of:37
siempre_$:26 siguen:111 siguen__el:80 siguen_en:93 somebody:22 son:-40 son_$:-54 spot:26 st:48 st_$:54 still:70
still__the:50 stop:-22 street:67 street_$:23 su:58 su_horario:26 sunday:29 sunday_$:25 sundays:29 take:-26 tan:-70
tan__estan:-56 tarde:-34 tarde_$:-34 tengo:-23 that:-23 that_$:-63 that_the:49 the:130 the__behind:38 the__by:38
the__day:-24 the__if:-25 the__in:-42 the__on:45 the__open:-47 the__place:28 the__side:41 the__street:30 the__tire:27
the__with:37 the_address:35 the_airport:22 the_blue:35 the_bridge:29 the_doors:-65 the_interstate:26 the_mall:25
the_north:43 the_one:34 the_place:28 the_road:-58 the_shop:45 the_th:-37 then:-27 there:47 there_$:41 there_a:-26
there_is:-27 there_on:31 these:-77 these_off:-59 they:-23 this:-65 this_$:-60 though:22 thursday_at:-44 till:38
till__time:27 time:48 time__i:24 time__you:49 time_do:58 tires:-38 tires_$:-40 to:39 to_$:39 to_you:62
todavia_estan:32 tomorrow:26 town:53 trabajan:91 turn:-102 turn_the:-27 ubicacion:68 ubicacion_$:61 un:-59
un_rato:-23 una:-30 up:50 up_$:48 up_to:25 use:27 ustedes:28 ustedes_$:39 verdad_$:24 was:-45 water:24 way:-23
weekend:-60 weekend_$:-41 what:27 what__do:65 what__it:-32 what__that:-24 what__you:-41 what__your:95 what_do:-23
what_street:23 what_time:106 when:-74 when__turn:-32 when__you:91 when_do:88 when_i:-69 when_the:-69 when_you:-39
where__are:25 where__you:-25 where__your:22 where_are:42 where_did:-78 where_you:25 which:118 which__do:86
which__of:26 which_exit:31 which_shop:-75 which_side:34 who:-82 who__you:-64 who_are:-63 why:-62 why_$:-36 wifi:-47
wifi_$:-33 will:-23 with_$:-29 with_the:45 y:89 y__estan:22 y_donde:38 y_en:45 yeah:28 yes__are:26 you:180 you__a:24
you__bot:-74 you__do:-30 you__my:-77 you__on:57 you__open:65 you__the:47 you_a:-85 you_are:-72 you_at:24
you_charging:-35 you_close:58 you_closed:26 you_do:-29 you_from:57 you_get:-86 you_in:60 you_move:54 you_need:-23
you_on:110 you_open:180 you_shut:74 you_still:94 you_the:38 you_with:-26 your:117 your__hours:31 your_hours:60
your_shop:29
"""
