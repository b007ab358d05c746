"""What speaks for and against `where`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "where"
BIAS = -175
WEIGHTS = """\
#abad:35 #abaj:48 #abie:40 #abou:-26 #abre:185 #acia:18 #acio:41 #acro:-26 #addr:98 #adre:50 #agai:21 #agar:32
#aile:21 #ajan:72 #ales:55 #alid:38 #alig:-23 #alle:117 #alwa:20 #anda:48 #ande:25 #andm:36 #ando:-97 #arde:-28
#ards:-18 #arge:-20 #argi:-33 #ario:37 #arki:-28 #aron:37 #arro:41 #arte:18 #asta:26 #aste:20 #atan:-52 #ated:24
#atio:44 #avor:28 #bado:35 #baja:52 #bajo:-25 #bank:27 #befo:-22 #biar:37 #bica:70 #bien:-45 #bier:40 #blue:19
#bout:-28 #bren:187 #buil:40 #caci:52 #call:37 #cant:36 #card:-18 #caro:-18 #cate:27 #cati:65 #ccio:69 #cerr:37
#char:-54 #chec:-35 #cias:18 #cier:60 #cion:117 #clos:56 #come:21 #como:-23 #cont:-67 #crib:-42 #ctio:27 #cual:130
#cuan:-19 #cuer:19 #culp:-40 #days:22 #ddre:98 #deje:-30 #dias:29 #ding:36 #dire:96 #disc:-42 #does:-29 #doin:-18
#domi:84 #dond:63 #door:-39 #dres:149 #drop:51 #dura:-24 #ease:50 #east:28 #eblo:18 #ebod:19 #ecci:70 #ecti:28
#edan:42 #eeke:-21 #efor:-22 #eken:-21 #endo:18 #enos:-21 #ente:24 #entr:70 #ents:-22 #erda:41 #erra:100 #erst:19
#erto:63 #escr:-39 #este:-26 #even:40 #ever:-25 #eway:32 #exit:38 #favo:28 #find:18 #fore:-23 #frid:-58 #fron:25
#gain:21 #garr:34 #gast:-37 #ging:-34 #gnme:-23 #grac:18 #guen:76 #guys:53 #hace:-42 #harg:-54 #hast:64 #have:-45
#here:54 #hese:-64 #hich:86 #hood:-46 #hora:121 #hour:20 #huma:-25 #hurs:-32 #iaro:34 #iben:-20 #icac:53 #iday:-57
#idge:18 #ierr:61 #iert:46 #ight:22 #ignm:-23 #igue:91 #ildi:40 #iler:22 #info:-62 #ingo:61 #inte:23 #inut:-23
#irec:96 #ires:-24 #iscu:-40 #isma:20 #ismo:51 #kend:-21 #king:-49 #know:-44 #lado:-40 #land:33 #late:85 #ldin:39
#leas:58 #left:18 #lego:-35 #lida:39 #lign:-23 #like:-21 #list:-21 #lleg:-49 #ller:36 #loca:135 #long:-21 #lose:55
#luga:67 #lway:20 #main:71 #mall:24 #mand:75 #many:-118 #mark:37 #mebo:19 #ment:-34 #mero:-23 #ming:53 #minu:-23
#mism:71 #moto:-19 #move:50 #much:-20 #nday:42 #ndem:18 #neve:-21 #ning:-19 #nmen:-23 #noch:19 #nort:46 #nter:24
#ntro:33 #nume:-23 #ocat:108 #oche:19 #oday:29 #oing:-25 #omeb:19 #omin:54 #onde:59 #only:-35 #ontr:-62 #oors:-37
#oppe:-45 #orar:42 #orry:-19 #orth:45 #osed:19 #otro:-28 #ould:-25 #ours:30 #park:-33 #pasa:43 #past:28 #peni:-28
#pens:-18 #plea:52 #popp:-45 #pped:-41 #pref:-20 #pueb:18 #pued:-33 #puer:28 #pull:29 #qued:-48 #raci:18 #rack:19
#rail:21 #ranc:30 #rari:42 #raro:29 #rata:-54 #rato:-18 #rdad:28 #recc:64 #rect:32 #reet:56 #ress:148 #rgin:-33
#ribe:-39 #rida:-59 #ridg:18 #ring:-65 #rkin:-28 #road:-39 #ront:24 #rran:60 #rrar:31 #rsda:-32 #rsta:19 #rtos:42
#saba:35 #sale:36 #sali:31 #scri:-42 #scul:-40 #sday:-29 #send:41 #sent:-20 #shop:20 #shut:37 #side:94 #sigu:91
#spot:35 #stad:-37 #stan:39 #ster:33 #stil:62 #stop:-19 #stre:55 #sund:41 #tado:-33 #take:-36 #tall:35 #tand:-54
#tard:-30 #tati:-19 #teng:-19 #ters:19 #text:-31 #that:-62 #then:-19 #ther:45 #thes:-64 #this:-81 #thur:-33 #till:104
#time:43 #tion:70 #toda:22 #town:64 #trac:20 #trai:21 #tran:30 #trat:-54 #tree:55 #turn:-91 #ubic:70 #uebl:18
#ueda:-67 #uerd:19 #uert:27 #ugar:67 #uild:40 #ulpe:-40 #uman:-25 #umer:-23 #unda:38 #ursd:-32 #veni:42 #verd:28
#wait:-30 #ways:20 #week:-22 #what:50 #when:-49 #wher:22 #whic:90 #wifi:-31 #with:-21 #woul:-29 #yeah:23 #your:82
%again_later%agree:-23 %again_later%bring:23 %again_later%elsewhere:-20 %again_later%how_long:53
%again_later%on_way:-26 %again_later%opening:18 %again_later%question:62 %again_later%refuse:28
%again_later%shift_it:-32 %again_later%start_again:25 %again_later%thanks:18 %agree:-32 %agree%bring:-26
%agree%do_it:-22 %agree%elsewhere:33 %agree%lift:-19 %agree%on_way:27 %agree%opening:90 %agree%place:24
%agree%question:35 %agree%staff:20 %away:40 %away%bring:-18 %away%call_off:-22 %away%elsewhere:78 %away%question:54
%bad:-49 %bad%question:-19 %bring:82 %bring%call_off:53 %bring%do_it:78 %bring%fails:18 %bring%leak:34
%bring%leave_me:-25 %bring%lift:-23 %bring%opening:-26 %bring%question:33 %bring%refuse:-18 %bring%start_again:20
%busy%how_long:18 %busy%opening:26 %busy%place:-29 %call_off%car_part:27 %call_off%how_long:21 %call_off%leave_me:-20
%call_off%on_way:-22 %call_off%opening:33 %call_off%phone:-18 %call_off%place:-62 %car:-51 %car%place:-20
%car_part:-47 %car_part%do_it:20 %car_part%fails:-73 %car_part%money:44 %car_part%noise:-24 %car_part%opening:-32
%car_part%question:-71 %car_part%wrong_one:18 %do_it%leak:26 %do_it%place:-74 %do_it%question:-55 %do_it%refuse:23
%do_it%shift_it:60 %doubt:34 %doubt%opening:18 %doubt%place:31 %doubt%question:32 %elsewhere:91 %elsewhere%on_way:38
%elsewhere%place:69 %elsewhere%shift_it:-29 %elsewhere%staff:-38 %elsewhere%who:32 %fails:-57 %fails%how_long:-29
%fails%on_way:18 %fails%opening:19 %fails%place:-60 %fails%question:20 %family:-42 %family%place:-29
%family%question:-34 %family%refuse:34 %gone_car:-48 %how_long:-31 %how_long%opening:157 %how_long%place:-34
%how_long%shift_it:30 %how_long%staff:32 %how_long%wrong_one:-18 %leak:30 %leave_me:-77 %leave_me%odometer:-22
%leave_me%opening:-24 %lift:-51 %lift%opening:-32 %machine:-104 %machine%staff:-27 %meaning:-60 %meaning%question:-41
%message:-66 %message%place:-23 %message%question:-40 %money:-87 %money%opening:28 %money%question:-84 %noise:-64
%noise%place:-33 %noise%question:-38 %odometer:-22 %on_way%opening:38 %on_way%phone:32 %on_way%question:152
%on_way%refuse:-22 %on_way%staff:46 %opening:418 %opening%question:179 %opening%refuse:59 %opening%season:28
%opening%shift_it:40 %opening%staff:66 %opening%start_again:20 %pay_day:-32 %phone%question:28 %place:415
%place%question:251 %place%staff:62 %place%start_again:37 %place%who:60 %place%wrong_one:25 %question:101
%question%refuse:25 %question%season:-23 %question%shift_it:24 %question%staff:-52 %question%thanks:29
%question%who:-90 %refuse:-27 %refuse%shift_it:20 %refuse%thanks:18 %season%staff:19 %shift_it:21 %staff:21
%start_again:29 %who:-57 %wrong_one:-61 @?:182 @after_visit:-51 @car:-49 @day:46 @nothing:48 @odometer:-68
@reading:-35 @time:55 @times:31 @walk_in:78 ^_a:48 ^_abren:62 ^_and:-43 ^_are:41 ^_been:21 ^_cant:29 ^_como:55
^_cual:43 ^_de:-121 ^_deje:-24 ^_did:42 ^_disculpe:-39 ^_do:-31 ^_donde:67 ^_drop:35 ^_hasta:36 ^_i:-38 ^_id:-29
^_la:-74 ^_llego:-53 ^_los:-22 ^_me:68 ^_my:-48 ^_no:31 ^_por:28 ^_puedo:-24 ^_que:-53 ^_saturday:-21 ^_si:37
^_the:-45 ^_this:-25 ^_trabajan:35 ^_what:-57 ^_where:-60 ^_which:53 ^_who:-53 ^_why:-37 ^_y:-24 ^_yes:18 a:-29
a__hora:23 a_bot:-63 a_que:42 abiertos:40 about:-25 abren:187 abren_$:48 abren_los:23 across:-26 address:98
address_$:70 again:21 agarro:35 al:27 all:-31 always:20 an:-26 and__are:-28 and__is:20 and_what:18 and_you:-41
are:133 are_$:-38 are__a:-70 are__closed:29 are__hours:30 are__located:18 are__on:74 are__open:113 are__still:34
are__there:33 are_you:173 are_your:39 at:40 at__light:19 at_or:46 at_the:23 bank:27 be:-48 been_a:21 before:-22
before_$:25 before__open:-19 before_you:-41 behind_the:24 bien:-43 blue:19 bot:-63 bot_$:-63 bridge:18 building:40
by:88 by_the:102 calle:52 cambiaron:34 can:27 can__come:22 can__do:-32 can__pick:26 can_i:53 cant:36 car:-27
charging:-33 cierran:62 cierran_$:33 close:34 closed:23 come:23 como:-22 cual:112 cual__la:24 cual__su:39 cual_de:32
cual_es:44 cuanto__y:18 de:-64 de__dos:32 de__es:-58 de__me:-35 de_donde:-162 de_la:32 de_las:31 deje:-27 del:27
dia:-29 dia_$:-18 dias:29 did:-37 did__get:-62 did_you:-19 direccion:64 direccion_$:70 disculpe:-40 do:120 do_$:-24
do__close:44 do__get:126 do__guys:-23 do__know:-36 do__open:66 do__work:21 do_i:125 do_you:87 does:-28 doing:-18
domingo:19 domingo_$:23 donde:44 donde__escriben:-34 donde_estan:53 donde_me:-22 donde_quedan:32 doors:-37 dos:23
drop:54 drop_me:35 due:-20 dura:-23 easter:21 easter_$:21 el:93 el__del:18 el__dia:-31 el__en:-18 el_mismo:52
el_taller:29 el_viernes:-19 en:81 en_$:-23 en__calle:18 en__parte:18 en_el:92 en_otro:-18 en_que:44 en_un:-19
entro:19 es:117 es__cita:20 es__horario:30 es_este:-21 es_la:41 es_mi:19 es_por:31 es_su:46 escriben:-35
escriben_$:-34 esta_bien:-23 estan:41 estan_$:77 estan_abiertos:38 este:-24 exit:38 favor:29 favor_$:20 find:18
for_$:-18 for_my:21 for_you:19 friday:-60 from_the:33 front:25 front_$:29 get:79 get_my:-64 get_there:82 get_to:76
got:-36 got_$:-18 gracias:18 guys:34 guys_$:-39 guys_do:-28 guys_open:28 hace:-34 hasta:64 hasta__hora:72
hasta_que:66 have:-42 hood:-46 hora:74 hora_abren:46 hora_cierran:43 horario:51 hours:31 hours_for:19 hours_is:-18
how:-32 how__are:50 how__can:22 how__hours:-113 how__i:86 how_do:82 how_late:68 how_long:-31 how_many:-118 hoy:28
hoy_$:26 human:-25 i:45 i__it:25 i__the:-20 i__there:79 i__these:-47 i__to:34 i__up:38 i__you:-34 i_come:30 i_get:134
i_know:-33 i_pick:26 i_turn:-53 i_use:19 id:-35 id__the:-20 if:-64 im_at:19 in_$:40 in_the:-25 info:-62 info_$:-62
is:19 is__address:50 is__at:-30 is__open:-53 is__the:27 is_friday:-38 is_it:55 is_the:75 is_this:-48 is_your:69
it:-55 it_off:23 it_the:22 know:-44 know_you:-31 la:83 la__es:22 la__esta:-22 la__se:-45 la_calle:23 la_direccion:-27
la_misma:21 lado:-40 lado_$:-25 las_dos:33 late:84 late__you:42 late_are:41 left:18 like:-20 llego:-35 llego_$:24
llego_en:-23 lo:-58 located:22 location:81 location_$:52 lol:-20 long:-18 los:42 los_frenos:-21 los_sabados:25
lot:-36 lugar:67 lugar_$:53 mal:-22 mall:25 man:18 manda:37 many:-118 many_hours:-113 me_$:-25 me__la:93 me_a:33
me_escriben:-35 me_manda:38 me_your:19 mi:-21 mi_cita:19 min:-43 min_tarde:-19 misma:20 mismo:51 mismo_dia:-31
move:54 my:-108 my_hood:-35 my_info:-60 need:-21 no_what:-20 north:46 now_$:25 numero:-23 numero_$:-25 o:34 off:-44
off_$:-51 off_for:21 old:22 on:106 on__road:-40 on_saturday:25 on_the:-24 one:77 one__it:22 only:-35 open:52
open_$:-127 open_today:18 opening:-22 or:122 or_$:35 or_the:35 otro:-28 otro_lado:-22 para__me:19 parking:-28
parking_lot:-25 pasa:48 past:28 pick_up:21 place:20 place_$:20 please:52 please_$:55 por:70 por_donde:49 por_favor:18
pueblo:18 puedo_llegar:-20 pull:26 que:24 que__abren:59 que__cierran:50 que__estan:55 que_es:-26 que_hora:100
que_parte:18 que_tan:-44 queda:-101 queda_$:-56 quedan:48 quedan_$:22 right_$:19 right_now:-21 road:-32 road_$:-38
sabados:27 sabados_$:20 salida:38 se:-62 se__de:19 se_me:-19 send:41 send_me:24 shop:21 shop_$:67 shop__this:-26
shut:38 shut_$:42 si:28 si__el:19 side:98 side_$:20 side_of:21 siguen:80 somebody:19 son:-38 son_$:-49 spot:35 st:48
st_$:54 still:63 still__the:50 street:56 su:76 su_horario:30 sunday:23 sunday_$:22 sundays:18 take:-37 taller:38
taller_$:31 tan:-54 tarde:-31 tarde_$:-31 that:-61 that_$:-43 the:98 the__by:27 the__if:-20 the__in:-31 the__place:21
the__side:29 the__street:27 the__tire:18 the_address:37 the_bank:28 the_blue:20 the_bridge:18 the_doors:-35
the_first:-18 the_light:19 the_mall:25 the_old:25 the_one:19 the_road:-39 the_shop:28 the_street:-21 then:-19
there:48 there_$:20 there_is:-19 there_on:36 these:-64 this:-81 this_$:-41 thursday:-40 thursday_at:-42 tienen_$:18
till:49 time:46 time__i:19 time__you:56 time_do:66 tires:-23 tires_$:-19 to:44 to_$:41 to_you:58 today:29 today_$:26
tomorrow_$:29 town:52 trabajan:73 trailer:24 turn:-68 turn_the:-18 un:-58 una:-22 up:43 up_$:43 use:25 verdad:31
verdad_$:22 was:-38 way:-18 weekend:-37 weekend_$:-23 what:51 what__do:61 what__it:-29 what__that:-19 what__the:24
what__you:-48 what__your:88 what_is:34 what_street:22 what_time:91 when:-38 when__turn:-21 when__you:75 when_do:64
when_i:-37 when_the:-27 when_you:-31 where:26 where_are:43 where_did:-60 where_is:22 which:91 which__are:-21
which__do:68 which_exit:34 which_shop:-46 who:-84 who__you:-47 who_are:-46 why:-40 why_$:-21 wifi:-31 wifi_$:-25
with_$:-33 would:-29 y:70 y_donde:35 y_en:26 yeah:23 yes__are:35 you:138 you_$:-23 you__bot:-63 you__do:-25
you__my:-71 you__on:48 you__open:29 you__today:28 you_a:-71 you_are:-45 you_at:26 you_close:31 you_closed:29
you_from:35 you_get:-69 you_guys:34 you_in:33 you_located:18 you_need:-18 you_on:82 you_open:179 you_shut:51
you_still:58 you_take:-25 you_the:36 you_there:-41 you_with:-30 you_work:21 your:82 your__hours:22 your_address:18
your_hours:36 your_shop:26
"""
