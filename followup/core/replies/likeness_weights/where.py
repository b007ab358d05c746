"""What speaks for and against `where`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "where"
BIAS = -193
WEIGHTS = """\
#abad:30 #abaj:48 #abie:53 #abre:208 #acar:-25 #acio:51 #acro:-25 #addr:120 #adre:45 #agar:27 #airp:23 #ajan:84
#ales:57 #alid:28 #alig:-26 #alle:146 #anda:69 #ande:29 #andm:31 #ando:-65 #arde:-25 #argi:-35 #ario:36 #arki:-24
#arly:44 #aron:29 #arqu:28 #arro:42 #asta:43 #atan:-55 #atio:54 #atur:23 #avor:33 #bado:30 #baja:67 #bajo:-30
#biar:32 #bica:86 #bien:-51 #bier:53 #blue:23 #bren:212 #buil:44 #caci:60 #call:43 #cant:29 #caro:-27 #cate:22
#cati:70 #ccio:67 #cerr:35 #char:-49 #chec:-40 #cibe:22 #cier:65 #cion:120 #clos:81 #come:26 #cont:-68 #crib:-52
#ctio:32 #cual:154 #culp:-47 #dame:30 #days:39 #ddre:120 #deje:-29 #desd:27 #ding:40 #dire:98 #disc:-48 #domi:73
#dond:75 #door:-33 #dres:165 #drop:71 #dura:-29 #eare:24 #earl:28 #ease:55 #east:25 #ecci:61 #ecti:34 #edan:36
#edes:23 #eeke:-50 #eken:-50 #emor:28 #empr:23 #enos:-26 #ente:40 #entr:103 #ents:-22 #erda:48 #eria:28 #erra:111
#erto:74 #escr:-49 #esde:27 #este:-39 #even:57 #ever:-22 #eway:26 #exit:57 #favo:33 #firs:-28 #frid:-53 #fron:33
#garr:28 #gast:-45 #ging:-36 #gnme:-26 #guen:82 #guys:56 #hace:-42 #harg:-48 #hast:89 #have:-64 #here:74 #hese:-76
#hich:99 #hood:-51 #hora:133 #huma:-30 #hurs:-27 #iaro:31 #iben:-23 #icac:62 #iday:-47 #ierd:23 #ierr:71 #iert:59
#ight:24 #ignm:-26 #igue:101 #ildi:44 #info:-63 #ingo:63 #inut:-33 #irec:98 #ires:-39 #irin:-61 #irpo:23 #irst:-28
#iscu:-47 #isma:23 #ismo:55 #keep:22 #kend:-50 #king:-51 #know:-47 #lace:29 #lado:-60 #land:29 #late:97 #ldin:44
#leas:63 #lego:-50 #lema:-30 #lida:34 #lign:-26 #like:-35 #list:-29 #lleg:-66 #ller:32 #loca:178 #lock:-23 #lose:81
#luga:64 #main:68 #mall:34 #mand:89 #many:-147 #mark:33 #ment:-38 #mero:-24 #ming:60 #minu:-33 #mism:78 #morr:25
#moto:-22 #move:47 #much:-24 #ndam:25 #nday:61 #ndma:31 #neve:-27 #ngos:50 #nloc:-23 #nmen:-26 #nort:68 #ntre:-23
#ntro:44 #nume:-27 #oble:-31 #ocal:60 #ocat:119 #oday:27 #oing:-35 #omin:61 #omor:25 #onde:70 #only:-48 #ontr:-63
#oors:-57 #open:22 #oppe:-53 #orar:44 #orro:25 #orth:55 #osed:26 #otro:-30 #ound:22 #ours:33 #park:-29 #pasa:57
#past:36 #peni:-43 #pens:-23 #plac:24 #plea:56 #popp:-50 #port:39 #pped:-48 #prob:-26 #pued:-35 #puer:33 #pull:34
#qued:-72 #rada:24 #ranc:61 #rari:44 #raro:28 #rata:-56 #recc:62 #rect:37 #reet:67 #ress:163 #rgin:-35 #ribe:-48
#rida:-54 #ring:-62 #rkin:-24 #road:-51 #robl:-30 #ront:31 #roun:31 #rpor:22 #rran:71 #rrar:30 #rrow:25 #rsda:-28
#rtos:52 #saba:29 #saca:-22 #sale:30 #satu:22 #scri:-52 #scul:-47 #sday:-32 #send:81 #sent:-22 #show:24 #shut:45
#side:95 #sigu:97 #spot:30 #stad:-45 #stan:71 #star:-23 #ster:24 #stil:67 #stop:-23 #stre:66 #sund:59 #tado:-39
#take:-43 #tall:32 #tand:-56 #tede:23 #teng:-23 #text:-29 #that:-28 #then:-27 #ther:38 #thes:-76 #they:-22 #this:-65
#thur:-28 #till:107 #time:54 #tion:93 #tire:-23 #toda:36 #tomo:24 #town:74 #tran:46 #trat:-56 #tree:66 #turd:22
#turn:-126 #ubic:86 #ueda:-99 #uent:28 #uert:33 #ueve:-25 #ugar:64 #uier:22 #uild:44 #ulpe:-47 #uman:-30 #umer:-27
#unda:54 #unlo:-23 #urda:22 #ursd:-28 #vaca:-22 #veni:56 #wait:-36 #week:-38 #what:41 #when:-91 #wher:42 #whic:104
#wifi:-38 #will:-27 #your:111 %again_later%how_long:67 %again_later%message:-23 %again_later%place:63
%again_later%question:68 %again_later%refuse:30 %again_later%shift_it:-44 %agree:-34 %agree%bring:-45
%agree%call_off:-31 %agree%do_it:-27 %agree%elsewhere:35 %agree%family:26 %agree%lift:-22 %agree%on_way:22
%agree%opening:106 %agree%place:45 %agree%question:49 %agree%staff:24 %away:50 %away%car_part:22 %away%elsewhere:90
%away%question:59 %bad:-57 %bad%place:-26 %bad%question:-24 %bring:65 %bring%call_off:57 %bring%do_it:86
%bring%leak:29 %bring%leave_me:-29 %bring%lift:-28 %bring%on_way:-23 %bring%opening:-23 %bring%question:64
%bring%refuse:-26 %busy%opening:25 %busy%place:-33 %call_off:-23 %call_off%car_part:27 %call_off%how_long:39
%call_off%leave_me:-24 %call_off%on_way:-35 %call_off%opening:42 %call_off%phone:-25 %call_off%place:-65 %car:-56
%car%place:-31 %car_part%do_it:23 %car_part%fails:-91 %car_part%money:51 %car_part%noise:-38 %car_part%question:-109
%car_part%shift_it:26 %car_part%who:25 %do_it%leak:22 %do_it%place:-81 %do_it%question:-48 %do_it%shift_it:53
%doubt:48 %doubt%place:40 %doubt%question:30 %elsewhere:68 %elsewhere%on_way:26 %elsewhere%place:78
%elsewhere%shift_it:-30 %elsewhere%staff:-46 %elsewhere%who:30 %fails:-71 %fails%how_long:-36 %fails%opening:22
%fails%place:-93 %fails%question:26 %family:-39 %family%place:-24 %family%question:-25 %family%refuse:40
%gone_car:-50 %how_long%lift:-26 %how_long%money:47 %how_long%on_way:-26 %how_long%opening:195 %how_long%place:-41
%how_long%shift_it:35 %how_long%staff:38 %how_long%wrong_one:-22 %leak:22 %leave_me:-88 %leave_me%place:-24 %lift:-83
%lift%opening:-40 %machine:-116 %machine%staff:-36 %meaning:-58 %meaning%question:-45 %message:-85 %message%place:-31
%message%question:-51 %money:-81 %money%opening:46 %money%place:-24 %money%question:-103 %noise:-86 %noise%place:-53
%noise%question:-49 %odometer:-25 %on_way:-42 %on_way%opening:42 %on_way%phone:23 %on_way%question:199
%on_way%refuse:-31 %on_way%staff:48 %on_way%wrong_one:31 %opening:458 %opening%place:24 %opening%question:181
%opening%refuse:78 %opening%season:35 %opening%shift_it:40 %opening%staff:89 %pay_day:-51 %pay_day%question:-27
%place:472 %place%question:298 %place%staff:71 %place%start_again:54 %place%who:77 %question:118 %question%refuse:22
%question%season:-27 %question%shift_it:32 %question%thanks:31 %question%who:-89 %question%wrong_one:31
%refuse%shift_it:30 %season:24 %shift_it:24 %staff:37 %staff%wrong_one:24 %start_again:28 %who:-49 %wrong_one:-43
@?:189 @after_visit:-63 @car:-67 @confirm:26 @day:55 @nothing:54 @odometer:-43 @offers:22 @time:50 @times:28
@walk_in:83 ^_a:43 ^_abren:68 ^_and:-47 ^_are:65 ^_cant:24 ^_como:77 ^_cual:36 ^_de:-153 ^_deje:-24 ^_did:38
^_disculpe:-46 ^_do:-24 ^_donde:58 ^_drop:32 ^_el:-31 ^_en:34 ^_hasta:47 ^_hours:72 ^_i:-43 ^_id:-27 ^_it:-24
^_la:-91 ^_llego:-78 ^_los:-27 ^_me:72 ^_my:-51 ^_no:34 ^_ok:22 ^_por:40 ^_price:24 ^_puedo:-25 ^_que:-59
^_saturday:-24 ^_si:43 ^_the:-63 ^_this:-25 ^_trabajan:35 ^_what:-81 ^_where:-62 ^_which:59 ^_who:-79 ^_why:-44
^_y:-31 a__horas:26 a__on:22 a_bot:-64 a_que:64 abiertos:49 abren:213 abren_$:41 abren_los:26 abren_manana:25
across:-25 address:120 address_$:81 agarro:30 airport:23 all:-26 an:-32 and:58 and__are:-35 and__i:26 and_you:-45
are:162 are_$:-48 are__a:-73 are__closed:34 are__from:27 are__hours:37 are__in:47 are__on:81 are__open:121
are__still:38 are__there:67 are_you:231 are_your:44 at:55 at_or:55 bay:27 be:-47 before_$:41 before__open:-23
before_you:-37 behind_$:-23 behind_the:40 bien:-48 blue:23 bot:-64 bot_$:-64 building:44 by:100 by_the:140 calle:62
cambiaron:31 can:30 can__come:32 can__do:-35 can_i:69 cant:30 car:-34 charging:-35 cierran:74 cierran_$:28 close:52
closed:33 come:30 como_llego:103 cross:23 cross_street:23 cual:138 cual__la:27 cual__su:39 cual_de:33 cual_es:52
cuanto__y:33 de:-52 de__dos:34 de__es:-68 de__me:-45 de__o:22 de_donde:-192 de_la:56 de_las:34 de_ustedes:25 deje:-26
del:42 del_taller:23 desde:27 dia:-23 did:-49 did__get:-62 did_you:-29 direccion:62 direccion_$:69 directions:38
disculpe:-47 do:102 do_$:-35 do__close:59 do__get:123 do__guys:-22 do__know:-36 do__need:-22 do__open:75 do__shut:52
do__turn:-40 do_i:123 do_you:102 domingos:50 domingos_$:50 donde:57 donde__escriben:-44 donde_es:24 donde_estan:67
donde_me:-34 donde_quedan:32 door:25 doors:-57 dos:26 drop:76 drop_it:38 drop_me:28 due:-23 dura:-27 early:48 el:101
el__de:39 el__del:23 el__dia:-26 el_de:40 el_mismo:56 el_taller:32 el_viernes:-24 en:102 en_$:-36 en__parte:23
en_cual:52 en_el:97 en_otro:-23 en_que:77 entrada:22 entrance:51 entro:34 entro_$:28 es:151 es_$:38 es__horario:33
es_el:22 es_en:23 es_este:-29 es_la:48 es_por:28 es_su:47 escriben:-45 escriben_$:-44 eso:-28 esta:-26 esta_bien:-27
estan:72 estan_$:89 estan_abiertos:48 este:-38 este_numero:-22 exit:57 favor:35 favor_$:27 first:-28 for:38
friday:-54 from_the:44 front:33 front_$:30 get:79 get__you:71 get_my:-63 get_there:96 get_to:80 got:-51 got_$:-23
guys:39 guys_$:-45 guys_do:-27 guys_open:39 hace:-25 hasta:89 hasta__hora:111 hasta_que:95 have:-60 hood:-51 hora:69
hora_abren:59 hora_cierran:47 hora_estan:26 horario:52 hours:34 hours_for:24 hours_is:-29 how__are:66 how__can:30
how__hours:-142 how__i:77 how_do:73 how_far:25 how_late:80 how_long:-24 how_many:-147 human:-30 i:26 i__it:32
i__the:-24 i__there:82 i__these:-60 i__to:36 i__up:44 i__you:-30 i_can:-23 i_come:42 i_drop:29 i_get:122 i_know:-33
i_pull:36 i_turn:-69 id:-34 if:-60 ill:-25 in_$:60 in_the:-35 info:-62 info_$:-62 is:47 is__a:-22 is__address:51
is__at:-31 is__open:-59 is__the:86 is__wifi:-23 is_friday:-43 is_it:93 is_the:56 is_this:-47 is_your:79 it:-24
it_$:-25 it__or:25 it_is:-24 it_off:28 it_the:45 keep:22 know:-46 know_you:-30 la:107 la__esta:-27 la__que:-30
la__se:-53 la_calle:22 la_direccion:-28 la_entrada:26 la_hora:-33 la_manana:-22 la_misma:24 lado:-54 lado_$:-34
las_$:-24 las_dos:27 late:97 late__you:46 late_are:46 le:-26 like:-33 llego:-50 llego_$:31 llego_como:-36
llego_en:-39 lo:-69 local:47 location:96 location_$:57 lol:-23 los:48 los_domingos:40 los_frenos:-30 lot:-34 lugar:64
lugar_$:56 main:69 mal:-26 mall:36 manda:48 many:-147 many__is:-28 many_hours:-142 me_$:-36 me__la:100 me_a:61
me_escriben:-45 me_manda:49 me_pasa:49 me_queda:-22 me_your:28 mi_numero:-25 min:-58 misma:23 mismo:55 mismo_dia:-26
move:56 my:-109 my_hood:-36 my_info:-60 need:-26 new:25 north:55 numero:-26 numero_$:-42 o:78 o__de:37 o_el:26
off:-45 off_$:-49 on:104 on_$:-25 on__road:-44 on_saturdays:22 on_the:-25 one:79 one__the:33 only:-48 open:88
open_$:-141 open__the:-28 opening:-34 or:134 or_$:58 or_the:30 otro:-29 otro_lado:-22 out:35 out_front:32 over_by:25
parking:-24 parking_lot:-28 pasa:48 past:37 pin:126 place:23 please:57 please_$:56 por:79 por_donde:67 por_favor:25
price:26 problema:-29 pull:35 que:23 que_$:-26 que__abren:73 que__cierran:59 que__eso:-25 que__estan:65
que__tienen:40 que_calle:22 que_es:-41 que_hora:135 que_horas:26 que_parte:24 que_tan:-53 queda:-120 queda_$:-68
quedan:48 quedan_$:22 reciben:22 right_$:24 road:-42 road_$:-40 round:26 salida:29 sat:25 saturday:32 saturday_$:24
saturday_hours:37 se:-40 send:80 send_me:66 shop_$:60 shop__this:-44 show:26 shut:51 shut_$:35 si:28 side:109
side_$:40 side__the:32 siguen:92 siguen_en:83 son:-34 son_$:-53 spot:30 st:54 st_$:59 still:68 still__the:59
street:67 street_$:24 su:75 su_horario:33 sunday:35 sunday_$:29 sundays:24 take:-44 taller:36 taller_$:25 tan:-67
tan__estan:-46 tarde:-28 tarde_$:-36 that:-28 that_$:-70 that_the:51 the:129 the__by:37 the__if:-22 the__in:-35
the__on:46 the__side:47 the__street:29 the__tire:23 the__you:-22 the_address:47 the_airport:23 the_bank:22
the_blue:24 the_doors:-54 the_mall:34 the_one:40 the_road:-42 the_shop:36 the_th:-22 then:-27 there:51 there_$:29
there_is:-24 there_on:35 these:-76 this:-65 this_$:-55 thursday:-35 thursday_at:-38 till:47 time:57 time__i:26
time__you:60 time_do:71 tires:-38 tires_$:-32 to:27 to_$:43 to_you:65 today:27 tomorrow:25 town:59 trabajan:72
turn:-93 turn_the:-24 un:-74 una:-32 up:45 up_$:46 up_to:27 ustedes:23 ustedes_$:27 was:-47 way:-22 weekend:-62
weekend_$:-44 what:43 what__do:78 what__it:-37 what__that:-23 what__the:22 what__you:-61 what__your:97 what_do:-22
what_is:25 what_time:116 when:-75 when__turn:-31 when__you:82 when_do:68 when_i:-57 when_the:-49 when_you:-36
where:31 where__the:-22 where_are:45 where_did:-61 which:107 which__do:73 which_exit:37 which_shop:-68 which_side:29
who:-109 who__you:-78 who_are:-78 why:-50 why_$:-34 wifi:-38 wifi_$:-29 will:-27 with_$:-32 with_the:24 y:81
y__estan:23 y_donde:38 y_en:38 y_me:23 ya:-25 yes__are:32 you:161 you_$:-26 you__at:23 you__bot:-64 you__do:-26
you__my:-71 you__on:53 you__open:60 you__the:33 you__today:22 you_a:-74 you_are:-58 you_at:25 you_close:52
you_closed:34 you_from:44 you_get:-70 you_guys:39 you_in:41 you_move:49 you_need:-22 you_on:87 you_open:195
you_shut:63 you_still:67 you_take:-29 you_the:42 you_with:-29 your:111 your__hours:29 your_hours:58 your_shop:30
"""
