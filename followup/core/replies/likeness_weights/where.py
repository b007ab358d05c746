"""What speaks for and against `where`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "where"
BIAS = -213
WEIGHTS = """\
#abad:43 #abaj:63 #abie:51 #abla:-26 #abre:259 #acar:-39 #acio:59 #acro:-30 #addr:158 #ados:-31 #adre:40 #agar:36
#ajan:108 #akes:-28 #ales:55 #alig:-26 #alle:170 #anda:100 #ande:37 #andm:33 #ando:-82 #arde:-31 #ards:-25 #argi:-37
#aria:-27 #ario:30 #arki:-45 #arly:59 #aron:57 #arqu:40 #arro:49 #asta:40 #atan:-65 #ater:39 #atio:57 #atra:41
#atur:40 #avia:25 #avor:40 #bado:43 #baja:89 #bajo:-40 #biar:48 #bica:102 #bien:-51 #bier:58 #blan:-26 #blue:38
#body:26 #brak:-34 #bren:267 #brid:29 #buil:46 #caci:74 #caer:25 #call:75 #canc:-34 #cant:40 #caro:-40 #cati:70
#ccio:61 #cele:-26 #cerr:55 #char:-49 #chec:-50 #cibe:41 #cier:73 #cion:118 #clos:106 #come:33 #cont:-78 #crib:-57
#ctio:33 #cual:158 #cuen:27 #cuer:25 #culp:-55 #dame:60 #davi:26 #days:41 #ddre:158 #deje:-30 #dejo:-26 #desd:45
#dias:37 #ding:35 #dire:101 #disc:-56 #doin:-32 #domi:73 #dond:87 #donu:30 #door:-26 #dres:204 #driv:-29 #drop:72
#dura:-27 #eare:25 #earl:35 #ease:65 #east:32 #eblo:35 #ebod:29 #ecci:57 #ecib:32 #ecti:35 #edan:47 #edes:35
#eeke:-63 #eken:-63 #emin:33 #emor:29 #empr:39 #encu:32 #engo:-29 #enid:28 #enos:-27 #ente:51 #entr:143 #ents:-26
#erda:55 #eria:45 #erra:144 #erst:28 #erto:81 #escr:-54 #esde:45 #este:-48 #even:59 #ever:-32 #eves:-25 #eway:37
#exit:71 #favo:40 #find:25 #firs:-35 #frid:-53 #from:34 #fron:45 #garr:37 #gast:-72 #ging:-37 #gnme:-26 #guen:104
#guys:41 #hace:-48 #harg:-47 #hast:114 #have:-88 #heel:-25 #here:82 #hese:-87 #hich:116 #hiri:-59 #hood:-57 #hora:158
#huma:-34 #iaro:50 #icac:75 #iday:-41 #idge:30 #iend:37 #ierr:82 #iert:61 #ight:44 #ignm:-26 #igue:123 #ildi:46
#info:-67 #ingo:63 #inte:29 #inut:-36 #irec:101 #ires:-45 #irin:-59 #irst:-35 #iscu:-55 #isma:39 #ismo:65 #just:-28
#kend:-63 #keys:-25 #king:-92 #know:-57 #lace:60 #lado:-82 #land:34 #late:124 #ldin:46 #leas:72 #lego:-49 #lema:-31
#lida:35 #lign:-26 #list:-34 #lleg:-67 #lley:50 #loca:216 #lock:-30 #lose:78 #losi:34 #lost:26 #luga:78 #lunc:32
#main:80 #mand:114 #many:-170 #mark:35 #mebo:29 #ment:-40 #mind:39 #ming:51 #minu:-36 #mism:104 #morr:30 #moto:-31
#move:63 #much:-35 #ncel:-34 #ncue:32 #ndam:53 #nday:61 #ndem:27 #ndma:33 #need:-27 #ngos:48 #nida:28 #nloc:-29
#nmen:-26 #nort:82 #nter:34 #ntra:32 #ntre:-25 #ntro:64 #nume:-28 #oble:-32 #ocal:93 #ocat:123 #odav:26 #oday:32
#oing:-52 #omeb:29 #omin:52 #omor:30 #onde:80 #only:-60 #ontr:-71 #onut:30 #oors:-75 #oppe:-59 #orar:41 #oras:27
#orro:30 #orry:-26 #orth:68 #osin:34 #otro:-27 #over:49 #ower:44 #park:-59 #pasa:56 #past:49 #peni:-42 #pens:-31
#plac:54 #plea:66 #popp:-56 #port:39 #pped:-56 #pref:-26 #prob:-28 #pueb:35 #pued:-28 #puen:29 #puer:35 #pull:32
#qued:-87 #rada:35 #rake:-32 #ranc:66 #rari:41 #raro:53 #rata:-66 #rday:31 #recc:59 #rect:42 #reet:80 #remi:32
#ress:201 #rgin:-37 #ribe:-53 #rida:-53 #ridg:30 #righ:27 #ring:-53 #rkin:-50 #road:-76 #robl:-32 #ront:43 #roun:27
#rran:85 #rrar:56 #rrow:30 #rsta:28 #rtos:55 #rumb:34 #saba:42 #saca:-36 #sale:33 #same:39 #satu:32 #scri:-58
#scul:-55 #sday:-26 #send:122 #sent:-31 #show:26 #shut:73 #side:116 #sigu:118 #sing:37 #some:33 #spot:25 #stad:-67
#stan:91 #star:-33 #ster:26 #stil:75 #stop:-31 #stre:79 #sund:64 #tada:-28 #tado:-47 #take:-31 #tand:-65 #tard:-33
#tari:-27 #tate:27 #tede:35 #teng:-32 #text:-31 #that:-27 #then:-31 #thes:-87 #they:-29 #this:-87 #till:105 #time:73
#ting:-32 #tion:98 #toda:55 #tomo:29 #towe:50 #town:68 #trad:32 #tran:52 #tras:37 #trat:-66 #tree:79 #tues:-25
#turd:32 #turn:-141 #ubic:102 #uebl:35 #ueda:-105 #uent:56 #uerd:25 #uert:34 #ueve:-34 #ugar:78 #uien:-27 #uier:28
#uild:46 #ulpe:-55 #uman:-34 #umbo:35 #umer:-28 #unch:32 #unda:57 #unlo:-29 #urda:32 #vaca:-25 #veni:69 #wait:-43
#wate:46 #week:-45 #what:42 #whee:-25 #when:-99 #wher:57 #whic:122 #wifi:-48 #will:-27 #yeah:44 #your:161
%again_later%agree:-31 %again_later%elsewhere:-30 %again_later%how_long:71 %again_later%lift:-34
%again_later%pay_day:-25 %again_later%place:86 %again_later%question:71 %again_later%shift_it:-39
%again_later%thanks:27 %agree:-38 %agree%bring:-57 %agree%call_off:-45 %agree%do_it:-29 %agree%elsewhere:25
%agree%family:27 %agree%lift:-28 %agree%opening:127 %agree%place:55 %agree%question:51 %away:72 %away%car_part:31
%away%do_it:28 %away%elsewhere:95 %away%question:107 %bad:-65 %bad%place:-29 %bad%question:-26 %bring:53
%bring%call_off:52 %bring%car_part:37 %bring%do_it:88 %bring%leak:31 %bring%leave_me:-39 %bring%lift:-37
%bring%question:45 %bring%refuse:-38 %busy:-38 %busy%place:-38 %busy%question:-30 %call_off%car_part:33
%call_off%elsewhere:-35 %call_off%family:27 %call_off%how_long:38 %call_off%leave_me:-36 %call_off%message:-29
%call_off%on_way:-38 %call_off%opening:37 %call_off%place:-62 %call_off%staff:26 %car:-69 %car_part%fails:-92
%car_part%money:51 %car_part%noise:-52 %car_part%question:-122 %car_part%shift_it:33 %car_part%who:29 %do_it%leak:26
%do_it%place:-72 %do_it%question:-51 %do_it%refuse:30 %do_it%shift_it:66 %doubt:26 %doubt%place:34 %elsewhere:84
%elsewhere%on_way:33 %elsewhere%place:61 %elsewhere%question:-38 %elsewhere%staff:-41 %elsewhere%who:37 %fails:-57
%fails%how_long:-40 %fails%opening:33 %fails%place:-110 %fails%question:27 %family:-50 %family%refuse:49
%gone_car:-81 %gone_car%place:-30 %how_long:-34 %how_long%lift:-34 %how_long%money:51 %how_long%on_way:-29
%how_long%opening:238 %how_long%place:-46 %how_long%question:57 %how_long%shift_it:41 %how_long%staff:42
%how_long%wrong_one:-30 %leave_me:-109 %leave_me%place:-31 %lift:-115 %lift%opening:-52 %lift%place:-29 %machine:-133
%machine%staff:-42 %meaning:-92 %meaning%place:-34 %meaning%question:-69 %message:-101 %message%place:-37
%message%question:-57 %money:-89 %money%opening:51 %money%question:-125 %noise:-104 %noise%place:-66
%noise%question:-50 %odometer:-27 %on_way:-68 %on_way%opening:77 %on_way%question:245 %on_way%staff:61
%on_way%wrong_one:27 %opening:505 %opening%question:232 %opening%refuse:93 %opening%season:49 %opening%shift_it:36
%opening%staff:114 %pay_day:-74 %pay_day%question:-41 %phone%place:27 %phone%question:26 %phone%refuse:-25 %place:506
%place%question:358 %place%season:-28 %place%staff:72 %place%start_again:65 %place%who:98 %question:132
%question%season:-38 %question%shift_it:32 %question%thanks:38 %question%who:-111 %question%wrong_one:25 %refuse:-35
%season:29 %shift_it:50 %staff:57 %staff%wrong_one:29 %who:-57 %wrong_one:-48 @?:226 @after_visit:-77 @car:-80
@confirm_stop:-31 @day:56 @nothing:50 @odometer:-84 @offers:27 @time:42 @times:33 @walk_in:71 ^_a:47 ^_abren:85
^_and:-63 ^_are:78 ^_como:92 ^_de:-170 ^_deje:-28 ^_did:53 ^_disculpe:-51 ^_do:-25 ^_donde:47 ^_drop:32 ^_el:-34
^_en:55 ^_hasta:67 ^_hours:73 ^_i:-54 ^_id:-33 ^_it:-33 ^_la:-107 ^_llego:-78 ^_los:-32 ^_lost:26 ^_me:78 ^_my:-62
^_no:48 ^_open:57 ^_please:-27 ^_por:41 ^_price:31 ^_puedo:-28 ^_que:-52 ^_saturday:-28 ^_send:114 ^_the:-90
^_this:-28 ^_trabajan:43 ^_what:-78 ^_where:-118 ^_which:57 ^_who:-79 ^_why:-61 ^_y:-42 ^_your:-32 a__horas:47
a__when:-25 a_bot:-73 a_que:75 abiertos:55 about:-27 abren:268 abren_$:58 abren_el:26 abren_los:31 abren_manana:30
across:-30 across_the:-25 address:158 address_$:87 agarro:40 al:32 all:-32 alley:50 an:-39 and:83 and__are:-53
and__i:32 and__is:28 and_you:-61 are:168 are_$:-68 are__a:-83 are__charging:-33 are__closed:33 are__from:33
are__hours:37 are__in:52 are__on:83 are__open:125 are__still:51 are__there:85 are_you:276 are_your:43 at:80 at_or:57
at_the:25 atras:29 avenida:28 bay:27 be:-76 be_there:-27 before_$:36 before__open:-32 before_you:-50 behind_the:52
best_$:-27 bien:-57 blue:38 bot:-73 bot_$:-73 bridge:31 building:46 by:140 by__mall:26 by_the:173 calle:89
cambiaron:50 can:26 can__come:32 can__do:-41 can_i:82 can_you:-30 cant:41 cant__you:28 car:-43 cerraron:57
charging:-36 cierran:89 cierran_$:30 close:65 closing:27 come:33 como_a:-27 como_llego:123 con:-27 cross:28
cross_street:28 cual:142 cual__es:34 cual__su:43 cual_de:37 cual_es:49 cuanto__y:42 days__you:28 de:-53 de__dos:37
de__es:-73 de__me:-57 de__son:-45 de_donde:-226 de_la:54 de_las:37 de_noche:25 de_siempre:25 de_ustedes:30 deje:-26
dejo:-26 del:50 desde:45 desde_el:26 dia:-28 dias:37 did:-59 did__get:-70 did__move:63 did_you:-35 direccion:60
direccion_$:84 direccion__favor:43 direccion_por:43 directions:43 disculpe:-54 do:129 do_$:-35 do__close:69
do__get:118 do__guys:-26 do__know:-48 do__need:-28 do__open:74 do__shut:65 do__turn:-34 do__use:35 do_i:153
do_you:108 doing:-32 domingos:48 domingos_$:54 donde:69 donde__escriben:-48 donde_es:36 donde_estan:93 donde_me:-38
donde_quedan:42 donut:30 door:49 doors:-75 doors_open:-53 dos__es:44 drive:-25 drop:81 drop_it:41 drop_me:29 due:-30
dura:-32 dura_$:-27 early:67 easter:26 el:109 el__de:44 el__dia:-29 el__en:-31 el_de:39 el_mismo:60 el_taller:45
el_viernes:-31 en:135 en_$:-36 en__calle:34 en__manana:-28 en__mismo:90 en__parte:25 en_cual:55 en_el:94 en_otro:-33
en_que:127 encuentro:32 entrada:36 entrance:59 entro:38 entro_$:33 es:194 es_$:83 es__horario:36 es__o:26 es_el:33
es_este:-36 es_la:46 es_por:32 es_su:51 escriben:-49 escriben_$:-44 eso:-62 eso_$:-39 esta_bien:-29 estan:94
estan_$:85 estan__el:29 estan__la:27 estan_abiertos:53 estaria:-25 este:-46 exit:71 far:29 far__you:32 far_are:32
favor:43 favor_$:36 find:26 find_you:45 first:-35 for:26 friday:-51 from:34 from_the:79 front:45 front_$:45
gastadas:-26 get:78 get__you:71 get_my:-67 get_there:110 get_to:92 got:-60 got_$:-26 guys_$:-54 guys__on:25
guys_do:-26 guys_open:42 guys_still:51 hace:-27 hasta:114 hasta__hora:142 hasta_que:114 have:-84 hiring:-59
hiring_$:-55 hood:-57 hora:92 hora_abren:64 hora_cierran:62 hora_estan:30 horario:50 horas:27 hours_is:-39
how__are:76 how__can:25 how__hours:-166 how__i:73 how_do:68 how_far:35 how_late:101 how_long:-35 how_many:-170
how_much:-26 human:-34 human_$:-33 i:39 i__it:31 i__only:-33 i__there:73 i__these:-65 i__to:40 i__up:44 i__you:-33
i_can:-31 i_come:61 i_drop:32 i_get:118 i_have:-25 i_know:-45 i_pull:35 i_turn:-73 i_use:53 id:-48 id__the:-25 if:-45
if__open:-34 ill:-42 in_$:99 in_the:-50 info:-66 info_$:-66 interstate:28 is:62 is__a:-38 is__address:70 is__at:-40
is__open:-66 is__the:111 is__there:29 is__wifi:-29 is_friday:-49 is_it:125 is_the:57 is_there:-27 is_this:-58
is_thursday:-47 is_your:102 it_$:-36 it__a:32 it__of:29 it__or:26 it_off:34 it_the:73 just:-26 keys:-25 know:-56
know_you:-43 la:81 la__esta:-31 la__que:-38 la__se:-66 la_direccion:-44 la_entrada:33 la_hora:-38 la_manana:-39
la_misma:40 la_ubicacion:71 lado:-75 lado_$:-36 las_$:-28 las_dos:30 last_time:-27 late:128 late__i:48 late__you:51
late_are:56 le:-39 llego:-49 llego_$:32 llego_como:-37 llego_en:-40 lo:-97 local:80 location:99 location_$:60 lol:-37
lol_$:-29 los:57 los_domingos:42 los_frenos:-32 lost:26 lot:-56 lugar:78 lugar_$:51 lunch:32 main:80 mal:-33 mall:27
mall_$:34 manana_$:-31 manda:57 mandame:56 many:-170 many__is:-39 many_hours:-164 me_$:-48 me__la:109 me_a:83
me_escriben:-49 me_manda:58 me_pasa:43 me_queda:-34 me_your:27 mi:-33 mi_numero:-26 min:-37 misma:39 mismo:66
mismo_dia:-29 move:70 much:-26 my:-144 my_hood:-39 my_info:-64 need:-31 new:35 no_gracias:26 north:68 now_$:39
numero:-28 numero_$:-43 o:108 o__de:40 o_el:28 of:28 of_your:45 off:-45 off_$:-62 on:121 on__road:-52 on_saturdays:32
on_the:-31 one:75 one__the:31 only:-60 open:80 open_$:-186 open__the:-39 open_tomorrow:27 opening:-27 opens:-26
or:164 or_$:61 or__you:25 or_the:49 otro:-25 otro__mas:29 otro_lado:-27 out:45 out_front:40 over:57 over__the:58
over_by:59 para__lado:-25 parking:-45 parking_lot:-32 pasa:39 past:50 pin:188 pin_$:144 place:57 please:66
please_$:76 popped:-56 por:113 por__calle:25 por__rumbo:32 por_cual:41 por_donde:83 por_favor:33 price:36
problema:-31 pueblo:35 puente:29 pull:34 que:49 que_$:-46 que__abren:79 que__cierran:74 que__es:27 que__eso:-34
que__estan:68 que__puedo:35 que__reciben:41 que__tienen:37 que_calle:43 que_dias:31 que_es:-49 que_hora:168
que_horario:35 que_horas:47 que_me:-39 que_parte:26 que_tan:-52 queda:-143 queda_$:-68 queda_el:-28 quedan:62
quedan_$:30 reciben:41 remind:37 remind_me:37 right:31 right_$:33 road:-64 road_$:-49 rumbo:31 sabado:25 sabado_$:33
sabado__la:-30 salida:31 same__as:32 saturday:41 saturday_hours:54 se:-36 se_cambiaron:51 send:122 send__a:56
send_me:87 shop_$:56 shop__the:41 shop__this:-58 shop_is:-37 show:27 shut:80 shut_$:54 side:130 side_$:40
side__the:38 side_of:39 siempre_$:28 siguen:116 siguen__el:83 siguen_en:97 somebody:26 son:-38 son_$:-55 spot:31
st:52 st_$:57 still:75 still__by:37 still__the:45 still_over:47 stop:-27 street:80 street_$:26 su:73 su_horario:36
sunday:30 sunday_$:26 sundays:34 take:-31 tan:-78 tan__estan:-59 tarde:-35 tarde_$:-37 tengo:-26 that:-26 that_$:-70
that_the:55 the:146 the__behind:42 the__by:52 the__day:-26 the__if:-26 the__in:-45 the__on:48 the__open:-53
the__place:30 the__side:42 the__street:32 the__tire:30 the__tower:46 the__with:42 the_address:53 the_blue:39
the_bridge:31 the_doors:-75 the_interstate:28 the_north:46 the_one:37 the_place:41 the_road:-61 the_shop:51
the_th:-43 the_water:48 then:-31 there:45 there_$:35 there_a:-29 there_is:-31 there_on:35 these:-87 these_off:-66
they:-27 this:-87 this_$:-70 thursday_at:-47 till:39 till__time:30 time:66 time__i:26 time__you:60 time_do:71
tires:-44 tires_$:-47 to:50 to_$:41 to_get:34 to_you:60 todavia:26 todavia_estan:35 today:32 today_$:27 tomorrow:31
too:-31 tower:46 town:58 trabajan:99 turn:-108 turn_the:-30 ubicacion:78 ubicacion_$:60 un:-70 una:-33 up:57 up_$:56
up_to:27 use:44 ustedes:35 ustedes_$:45 verdad_$:26 was:-47 water:48 way:-26 weekend:-83 weekend_$:-59 what:46
what__do:79 what__it:-34 what__that:-27 what__you:-47 what__your:111 what_do:-32 what_is:25 what_street:27
what_time:125 when:-93 when__turn:-41 when__you:103 when_do:98 when_i:-80 when_the:-77 when_you:-45 where:33
where__are:28 where__your:25 where_are:51 where_did:-75 where_you:32 which:137 which__do:109 which__of:28
which_entrance:37 which_exit:35 which_shop:-90 which_side:36 who:-121 who__you:-95 who_are:-95 why:-70 why_$:-38
wifi:-48 wifi_$:-34 will:-27 with_$:-39 with_the:50 y:99 y__estan:26 y_donde:44 y_en:51 yeah:44 yeah_$:26 yes__are:31
you:222 you_$:-47 you__bot:-73 you__do:-33 you__my:-78 you__on:65 you__open:79 you__still:51 you__the:48 you_a:-85
you_are:-80 you_at:28 you_charging:-33 you_close:68 you_closed:33 you_do:-31 you_from:64 you_get:-87 you_hiring:-53
you_in:68 you_move:63 you_need:-25 you_on:122 you_open:215 you_shut:84 you_still:113 you_the:52 you_there:-27
you_with:-35 your:144 your__hours:35 your_address:25 your_hours:67 your_shop:31
"""
