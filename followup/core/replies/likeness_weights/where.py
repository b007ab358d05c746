"""What speaks for and against `where`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "where"
BIAS = -174
WEIGHTS = """\
#abad:29 #abaj:35 #abie:44 #abou:-19 #abre:178 #acar:-18 #acio:37 #acro:-21 #addr:104 #adre:36 #agar:22 #airp:18
#ajan:66 #ales:46 #alid:22 #alig:-20 #alle:117 #anda:55 #ande:24 #andm:25 #ando:-50 #argi:-25 #ario:31 #arki:-18
#arly:34 #aron:24 #arqu:23 #arro:32 #asta:39 #atan:-39 #atio:44 #atur:21 #avor:25 #bado:29 #baja:51 #bajo:-23
#biar:25 #bica:63 #bien:-38 #bier:44 #blue:18 #bout:-20 #bren:182 #buil:35 #caci:45 #call:34 #cant:22 #caro:-21
#cate:19 #cati:55 #ccio:62 #cerr:27 #char:-38 #chec:-31 #cibe:18 #cier:54 #cion:100 #clos:67 #come:21 #cont:-51
#crib:-40 #ctio:24 #cual:126 #cuan:-20 #culp:-34 #dame:24 #days:36 #ddre:104 #deje:-21 #dejo:-18 #desd:22 #dias:18
#ding:31 #dire:86 #disc:-35 #domi:58 #dond:69 #door:-26 #dres:141 #drop:56 #dura:-20 #eare:20 #earl:22 #ease:47
#east:20 #ecci:57 #ecti:26 #edan:30 #eeke:-38 #eken:-38 #emor:20 #empr:19 #enos:-20 #ente:31 #entr:81 #erda:39
#eria:22 #erra:90 #erto:61 #escr:-38 #esde:22 #esta:18 #este:-31 #even:45 #ever:-18 #eway:20 #exit:43 #favo:25
#firs:-21 #frid:-37 #fron:26 #garr:23 #gast:-32 #ging:-26 #gnme:-20 #guen:59 #guys:47 #hace:-36 #harg:-37 #hast:72
#have:-55 #here:74 #hese:-54 #hich:79 #hood:-35 #hora:118 #huma:-21 #hurs:-20 #iaro:24 #icac:46 #iday:-32 #ierd:19
#ierr:59 #iert:49 #ignm:-20 #igue:73 #ildi:35 #info:-43 #ingo:50 #inut:-27 #irec:86 #ires:-30 #irin:-44 #irpo:18
#irst:-21 #iscu:-34 #isma:18 #ismo:39 #kend:-38 #king:-42 #know:-36 #lace:22 #lado:-46 #land:23 #late:76 #ldin:35
#leas:53 #lego:-40 #lema:-21 #lida:27 #lign:-20 #like:-29 #list:-21 #lleg:-52 #ller:25 #loca:141 #lock:-18 #lose:67
#luga:47 #main:47 #mall:22 #mand:71 #many:-108 #mark:26 #ment:-30 #mero:-18 #ming:48 #minu:-27 #mism:57 #morr:20
#move:38 #much:-22 #ndam:20 #nday:47 #ndma:25 #neve:-21 #ngos:39 #nloc:-18 #nmen:-20 #nort:51 #ntre:-18 #ntro:35
#nume:-20 #oble:-22 #ocal:48 #ocat:93 #oday:22 #oing:-31 #omin:49 #omor:20 #onde:64 #only:-34 #ontr:-46 #oors:-45
#open:40 #oppe:-36 #orar:37 #orro:20 #orry:-18 #orth:41 #osed:22 #otro:-23 #ours:29 #park:-23 #pasa:41 #past:29
#peni:-33 #plac:18 #plea:48 #popp:-34 #port:31 #pped:-33 #prob:-18 #pued:-26 #puer:27 #pull:27 #qued:-53 #rada:18
#ranc:48 #rari:37 #raro:22 #rata:-41 #rday:19 #recc:57 #rect:28 #reet:55 #ress:139 #rgin:-25 #ribe:-37 #rida:-38
#ring:-45 #rkin:-19 #road:-37 #robl:-21 #ront:24 #roun:24 #rpor:18 #rran:60 #rrar:24 #rrow:20 #rsda:-21 #rtos:43
#saba:29 #sale:23 #satu:20 #scri:-40 #scul:-34 #sday:-25 #send:65 #sent:-18 #show:20 #shut:35 #side:72 #sigu:70
#spot:24 #stad:-32 #stan:69 #ster:19 #stil:51 #stop:-18 #stre:54 #sund:45 #tado:-28 #take:-35 #tall:25 #tand:-41
#teng:-20 #text:-24 #that:-25 #then:-23 #ther:32 #thes:-54 #they:-19 #this:-51 #thur:-21 #till:82 #time:48 #ting:-18
#tion:74 #tire:-18 #toda:29 #tomo:19 #town:55 #tran:36 #trat:-41 #tree:54 #turd:20 #turn:-93 #ubic:63 #ueda:-73
#uent:22 #uert:26 #ueve:-20 #ugar:47 #uild:35 #ulpe:-34 #uman:-21 #umer:-20 #unda:41 #unlo:-18 #urda:20 #ursd:-21
#veni:45 #wait:-29 #week:-29 #what:42 #when:-69 #wher:44 #whic:84 #wifi:-28 #will:-20 #your:88
%again_later%how_long:53 %again_later%lift:-18 %again_later%message:-19 %again_later%place:60
%again_later%question:56 %again_later%refuse:22 %again_later%shift_it:-36 %agree:-29 %agree%bring:-36
%agree%call_off:-26 %agree%do_it:-18 %agree%elsewhere:28 %agree%family:20 %agree%lift:-18 %agree%on_way:18
%agree%opening:82 %agree%place:44 %agree%question:37 %agree%staff:18 %away:35 %away%elsewhere:67 %away%question:43
%bad:-49 %bad%place:-20 %bad%question:-21 %bring:48 %bring%call_off:46 %bring%do_it:61 %bring%leak:23
%bring%leave_me:-23 %bring%lift:-22 %bring%on_way:-18 %bring%question:52 %bring%refuse:-20 %busy%opening:20
%busy%place:-27 %call_off%car_part:20 %call_off%how_long:30 %call_off%leave_me:-20 %call_off%on_way:-29
%call_off%opening:34 %call_off%phone:-22 %call_off%place:-42 %call_off%question:22 %car:-52 %car%place:-25
%car_part%fails:-66 %car_part%money:39 %car_part%noise:-30 %car_part%question:-88 %car_part%shift_it:20
%car_part%who:19 %do_it%place:-55 %do_it%question:-35 %do_it%shift_it:40 %doubt:35 %doubt%place:32 %doubt%question:23
%elsewhere:58 %elsewhere%on_way:21 %elsewhere%place:63 %elsewhere%shift_it:-23 %elsewhere%staff:-30 %elsewhere%who:22
%fails:-55 %fails%how_long:-27 %fails%opening:18 %fails%place:-67 %fails%question:19 %family:-33 %family%question:-18
%family%refuse:31 %gone_car:-46 %how_long%lift:-21 %how_long%money:35 %how_long%on_way:-21 %how_long%opening:169
%how_long%place:-30 %how_long%question:29 %how_long%shift_it:27 %how_long%staff:28 %leave_me:-72 %leave_me%place:-20
%lift:-66 %lift%opening:-29 %machine:-87 %machine%staff:-26 %meaning:-52 %meaning%question:-40 %message:-69
%message%place:-24 %message%question:-40 %money:-80 %money%opening:37 %money%place:-19 %money%question:-91 %noise:-69
%noise%place:-40 %noise%question:-38 %odometer:-22 %on_way:-32 %on_way%opening:35 %on_way%phone:18
%on_way%question:154 %on_way%refuse:-25 %on_way%staff:38 %on_way%wrong_one:24 %opening:420 %opening%place:24
%opening%question:171 %opening%refuse:61 %opening%season:28 %opening%shift_it:33 %opening%staff:67 %pay_day:-44
%pay_day%question:-23 %place:440 %place%question:274 %place%season:-18 %place%staff:52 %place%start_again:46
%place%who:59 %question:108 %question%season:-23 %question%shift_it:23 %question%thanks:24 %question%who:-81
%question%wrong_one:24 %refuse:-30 %refuse%shift_it:23 %shift_it:18 %staff:29 %start_again:23 %thanks:-19 %who:-50
%wrong_one:-42 @?:173 @after_visit:-57 @car:-59 @confirm:27 @day:38 @nothing:47 @odometer:-42 @time:35 @walk_in:78
^_a:40 ^_abren:59 ^_and:-34 ^_are:60 ^_cant:19 ^_como:54 ^_cual:32 ^_de:-113 ^_did:30 ^_disculpe:-33 ^_do:-19
^_donde:46 ^_drop:26 ^_el:-24 ^_en:30 ^_hasta:39 ^_hours:50 ^_i:-34 ^_id:-20 ^_it:-20 ^_la:-65 ^_llego:-55 ^_los:-20
^_me:54 ^_my:-38 ^_no:26 ^_por:33 ^_price:19 ^_que:-47 ^_saturday:-20 ^_si:32 ^_the:-48 ^_this:-19 ^_trabajan:26
^_what:-54 ^_where:-42 ^_which:49 ^_who:-66 ^_why:-35 ^_y:-27 a__horas:22 a_bot:-46 a_que:59 abiertos:41 abren:182
abren_$:38 abren_los:22 abren_manana:21 across:-21 address:104 address_$:71 agarro:24 airport:18 all:-23 an:-26
and:45 and__are:-23 and__i:20 and_you:-32 are:145 are_$:-35 are__a:-53 are__closed:28 are__from:22 are__hours:29
are__in:32 are__on:58 are__open:102 are__still:31 are__there:53 are_you:201 are_your:34 at:41 at_or:41 bay:21 be:-38
before_$:32 before_you:-29 behind_the:32 bien:-35 blue:18 bot:-46 bot_$:-46 building:35 by:76 by_the:106 calle:51
cambiaron:24 can:23 can__come:25 can__do:-25 can_i:55 cant:23 car:-29 charging:-25 cierran:62 cierran_$:24 close:44
closed:27 come:24 como_llego:77 cross:18 cross_street:18 cual:113 cual__la:23 cual__su:32 cual_de:26 cual_es:46
cuanto__y:23 de:-41 de__dos:26 de__es:-49 de__me:-34 de_donde:-141 de_la:43 de_las:26 de_ustedes:20 deje:-18 dejo:-18
del:32 del_taller:18 desde:22 dias:18 did:-35 did__get:-42 did_you:-18 direccion:58 direccion_$:56 directions:29
disculpe:-34 do:89 do_$:-23 do__close:48 do__get:87 do__know:-26 do__open:60 do__shut:41 do__turn:-26 do_i:98
do_you:82 domingos:39 domingos_$:39 donde:55 donde__escriben:-33 donde_es:24 donde_estan:52 donde_me:-25
donde_quedan:26 door:20 doors:-45 dos:19 drop:61 drop_it:28 drop_me:23 due:-19 dura:-19 early:38 el:78 el__de:30
el__del:18 el__dia:-18 el_de:32 el_mismo:40 el_taller:26 el_viernes:-18 en:77 en_$:-26 en_cual:41 en_el:69
en_otro:-18 en_que:61 entrance:41 entro:27 entro_$:22 es:119 es_$:31 es__horario:27 es_el:20 es_en:18 es_este:-23
es_la:38 es_por:22 es_su:39 escriben:-34 escriben_$:-32 eso:-22 esta:-20 esta_bien:-19 estan:70 estan_$:72
estan_abiertos:40 este:-30 exit:43 favor:26 favor_$:20 first:-21 for:26 friday:-37 from_the:35 front:26 front_$:24
get:61 get__you:52 get_my:-43 get_there:68 get_to:60 got:-41 guys:33 guys_$:-28 guys_do:-19 guys_open:26 hace:-21
hasta:72 hasta__hora:90 hasta_que:78 have:-52 hood:-35 hora:65 hora_abren:51 hora_cierran:39 hora_estan:21 horario:43
hours:29 hours_is:-22 how__are:53 how__can:22 how__hours:-103 how__i:57 how_do:54 how_far:20 how_late:65 how_long:-21
how_many:-108 human:-21 i:22 i__it:24 i__the:-19 i__there:58 i__these:-40 i__to:24 i__up:35 i__you:-21 i_come:33
i_drop:21 i_get:87 i_know:-23 i_pull:29 i_turn:-47 id:-26 if:-45 ill:-19 in_$:43 in_the:-27 info:-42 info_$:-42 is:41
is__a:-18 is__address:46 is__at:-22 is__open:-40 is__the:68 is_friday:-29 is_it:72 is_the:45 is_this:-37 is_your:66
it:-34 it_$:-24 it__or:20 it_is:-20 it_off:20 it_the:36 keep:18 know:-35 know_you:-21 la:87 la__esta:-19 la__que:-24
la__se:-36 la_entrada:21 la_hora:-24 la_misma:19 lado:-42 lado_$:-25 las_$:-18 las_dos:22 late:78 late__you:38
late_are:37 le:-24 like:-27 llego:-40 llego_$:18 llego_como:-25 llego_en:-29 lo:-57 local:38 location:74
location_$:46 lol:-18 los:36 los_domingos:29 los_frenos:-22 lot:-27 lugar:48 lugar_$:37 main:47 mal:-20 mall:24
manda:38 many:-108 many__is:-21 many_hours:-103 me_$:-30 me__la:76 me_a:49 me_escriben:-34 me_manda:38 me_pasa:35
me_queda:-19 me_your:21 mi_numero:-19 min:-42 misma:18 mismo:39 mismo_dia:-18 move:45 my:-83 my_hood:-25 my_info:-40
need:-20 new:19 north:41 numero:-19 numero_$:-31 o:61 o__de:30 o_el:21 off:-31 off_$:-36 on:78 on__road:-31
on_saturdays:18 on_the:-20 one:62 one__the:27 only:-34 open:90 open_$:-98 opening:-26 or:102 or_$:44 or_the:24
otro:-21 otro_lado:-18 out:26 out_front:26 over_by:20 parking:-18 parking_lot:-22 pasa:34 past:29 pin:101 place:18
please:48 please_$:46 por:61 por_donde:53 por_favor:19 price:19 problema:-21 pull:28 que:19 que_$:-21 que__abren:64
que__cierran:50 que__eso:-20 que__estan:50 que__tienen:29 que_calle:18 que_es:-33 que_hora:117 que_horas:22
que_tan:-39 queda:-91 queda_$:-52 quedan:39 quedan_$:18 reciben:18 right_$:20 road:-30 road_$:-28 round:21 sabados:18
salida:23 sat:19 saturday:23 saturday_$:19 saturday_hours:29 se:-31 send:64 send_me:52 shop_$:49 shop__this:-33
show:21 shut:41 shut_$:27 si:18 side:83 side_$:29 side__the:25 siguen:66 siguen_en:59 son:-24 son_$:-39 spot:24 st:35
st_$:39 still:52 still__the:42 street:55 street_$:19 su:58 su_horario:27 sunday:25 sunday_$:19 sundays:20 take:-35
taller:28 taller_$:21 tan:-49 tan__estan:-32 tarde:-19 tarde_$:-26 that:-25 that_$:-54 that_the:40 the:97 the__by:29
the__in:-27 the__on:36 the__side:34 the__street:24 the__tire:18 the__you:-18 the_address:41 the_airport:18
the_blue:19 the_doors:-42 the_mall:22 the_one:31 the_road:-30 the_shop:29 the_th:-19 then:-23 there:44 there_$:25
there_is:-18 there_on:29 these:-54 this:-51 this_$:-42 thursday:-26 thursday_at:-27 till:37 time:51 time__i:21
time__you:52 time_do:61 tires:-29 tires_$:-24 to_$:34 to_you:47 today:22 tomorrow:20 town:43 trabajan:56 turn:-67
turn_the:-18 un:-58 una:-27 up:34 up_$:36 up_to:21 ustedes_$:21 was:-38 way:-18 weekend:-48 weekend_$:-33 what:44
what__do:66 what__it:-28 what__that:-18 what__the:19 what__you:-49 what__your:79 what_do:-19 what_is:25 what_time:99
when:-56 when__turn:-23 when__you:66 when_do:55 when_i:-42 when_the:-40 when_you:-29 where:35 where_are:38
where_did:-41 which:87 which__do:58 which_exit:27 which_shop:-53 which_side:23 who:-92 who__you:-64 who_are:-63
why:-40 why_$:-25 wifi:-28 wifi_$:-21 will:-20 with_$:-27 with_the:19 y:56 y_donde:27 y_en:30 y_me:18 ya:-20
yes__are:26 you:147 you_$:-25 you__at:18 you__bot:-45 you__do:-19 you__my:-50 you__on:46 you__open:44 you__the:25
you__today:19 you_a:-54 you_are:-44 you_at:21 you_close:43 you_closed:28 you_from:36 you_get:-48 you_guys:33
you_in:27 you_move:39 you_on:63 you_open:165 you_shut:50 you_still:54 you_take:-23 you_the:34 you_with:-24 your:88
your__hours:22 your_hours:45 your_shop:23
"""
