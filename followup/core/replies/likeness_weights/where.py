"""What speaks for and against `where`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "where"
BIAS = -196
WEIGHTS = """\
#abad:44 #abaj:58 #abie:47 #abla:-25 #abre:234 #acar:-34 #acio:54 #addr:140 #ados:-27 #adre:37 #agai:25 #agar:32
#ajan:101 #ales:48 #alle:162 #anda:91 #ande:35 #andm:28 #ando:-76 #arde:-32 #argi:-37 #aria:-25 #ario:28 #arki:-41
#arly:51 #aron:43 #arqu:34 #arro:42 #asta:39 #atan:-60 #atio:55 #atra:36 #atur:37 #avor:42 #bado:43 #baja:84
#bajo:-38 #biar:35 #bica:91 #bien:-46 #bier:53 #blue:34 #brak:-28 #bren:242 #brid:27 #buil:43 #caci:66 #call:72
#canc:-28 #cant:36 #caro:-36 #cati:67 #ccio:67 #cerr:49 #char:-48 #chec:-46 #cibe:37 #cier:67 #cion:119 #clos:95
#come:36 #como:-31 #cont:-73 #crib:-52 #ctio:32 #cual:148 #culp:-48 #dame:52 #days:38 #ddre:140 #deje:-27 #desd:39
#dias:34 #ding:33 #dire:104 #disc:-50 #domi:69 #dond:65 #donu:27 #door:-33 #dres:182 #driv:-29 #drop:64 #dura:-25
#earl:30 #ease:65 #east:28 #eblo:31 #ebod:25 #ecci:64 #ecib:30 #ecti:34 #edan:37 #edes:30 #eeke:-53 #eken:-53
#emin:29 #emor:25 #empr:35 #encu:28 #engo:-27 #enos:-27 #ente:43 #entr:128 #erda:46 #eria:39 #erra:131 #erst:25
#erto:74 #escr:-49 #esde:39 #este:-44 #even:52 #eway:33 #exit:63 #favo:42 #firs:-33 #frid:-63 #from:34 #fron:41
#gain:25 #garr:33 #gast:-66 #ging:-38 #guen:99 #guys:39 #hace:-41 #harg:-46 #hast:106 #have:-78 #here:91 #hese:-75
#hich:119 #hiri:-59 #hood:-55 #hora:143 #huma:-32 #iaro:37 #icac:67 #iday:-53 #idge:28 #iend:32 #ierr:76 #iert:56
#ight:32 #igue:114 #ildi:43 #info:-69 #ingo:60 #inte:26 #inut:-33 #irec:104 #ires:-37 #irin:-60 #irst:-33 #iscu:-48
#isma:35 #ismo:62 #kend:-53 #king:-81 #know:-50 #lace:48 #lado:-73 #land:29 #late:114 #ldin:43 #leas:72 #lego:-54
#lema:-25 #lida:31 #list:-29 #lleg:-73 #lley:46 #loca:190 #lock:-26 #lose:77 #luga:73 #lunc:26 #main:73 #mall:27
#mand:106 #many:-164 #mark:30 #mebo:25 #ment:-35 #mind:34 #ming:54 #minu:-33 #mism:97 #morr:29 #move:55 #much:-33
#ncel:-28 #ncue:28 #ndam:48 #nday:60 #ndem:25 #ndma:28 #ngos:44 #nloc:-25 #nort:74 #nter:30 #ntra:28 #ntro:57
#nume:-27 #oble:-26 #ocal:75 #ocat:115 #oday:25 #oing:-42 #omeb:25 #omin:55 #omor:29 #onde:59 #only:-53 #ontr:-66
#onut:27 #oors:-65 #oppe:-58 #orar:39 #orro:29 #orth:62 #otro:-26 #over:30 #park:-52 #pasa:49 #past:40 #peni:-35
#pens:-29 #plac:43 #plea:66 #popp:-55 #port:36 #pped:-55 #pueb:31 #pued:-29 #puen:25 #puer:31 #pull:30 #qued:-83
#rada:32 #rake:-26 #ranc:60 #rari:39 #raro:46 #rata:-61 #rday:30 #recc:64 #rect:40 #reet:68 #remi:28 #ress:179
#rgin:-37 #ribe:-48 #rida:-64 #ridg:28 #ring:-54 #rkin:-43 #road:-71 #robl:-26 #ront:39 #rran:77 #rrar:49 #rrow:29
#rsta:26 #rtos:50 #rumb:30 #saba:43 #saca:-32 #sale:28 #same:34 #satu:31 #scri:-52 #scul:-48 #sday:-25 #send:94
#sent:-26 #shop:28 #shut:66 #side:108 #sigu:111 #sing:26 #some:29 #stad:-60 #stan:69 #star:-30 #stil:73 #stop:-25
#stre:67 #sund:59 #tada:-25 #tado:-43 #take:-29 #tand:-60 #tard:-34 #tari:-25 #tate:27 #tede:30 #teng:-30 #text:-29
#that:-31 #then:-27 #ther:36 #thes:-75 #they:-26 #this:-74 #till:103 #time:64 #ting:-25 #tion:94 #toda:39 #tomo:27
#towe:28 #town:59 #trad:30 #tran:47 #tras:34 #trat:-61 #tree:67 #turd:31 #turn:-127 #ubic:91 #uebl:31 #ueda:-100
#uent:47 #uert:30 #ueve:-31 #ugar:73 #uien:-26 #uild:43 #ulpe:-48 #uman:-32 #umbo:32 #umer:-27 #unch:25 #unda:53
#unlo:-25 #urda:31 #veni:58 #wait:-41 #week:-40 #what:36 #when:-83 #wher:51 #whic:124 #wifi:-44 #yeah:28 #your:149
%again_later%agree:-27 %again_later%how_long:64 %again_later%lift:-31 %again_later%place:62 %again_later%question:71
%again_later%refuse:25 %again_later%shift_it:-33 %agree:-28 %agree%bring:-48 %agree%call_off:-33 %agree%do_it:-27
%agree%elsewhere:27 %agree%fails:-26 %agree%family:25 %agree%lift:-25 %agree%opening:118 %agree%place:43
%agree%question:51 %away:72 %away%car_part:27 %away%elsewhere:84 %away%question:101 %bad:-61 %bad%place:-26
%bad%question:-25 %bring:67 %bring%call_off:53 %bring%car_part:33 %bring%do_it:81 %bring%leak:27 %bring%leave_me:-32
%bring%lift:-32 %bring%question:54 %bring%refuse:-32 %busy:-35 %busy%place:-34 %busy%question:-26
%call_off%car_part:30 %call_off%elsewhere:-28 %call_off%family:25 %call_off%how_long:34 %call_off%leave_me:-30
%call_off%message:-25 %call_off%on_way:-31 %call_off%opening:39 %call_off%place:-64 %car:-58 %car_part:-28
%car_part%fails:-91 %car_part%money:45 %car_part%noise:-42 %car_part%question:-109 %car_part%shift_it:31
%car_part%who:26 %do_it%place:-79 %do_it%question:-55 %do_it%refuse:25 %do_it%shift_it:60 %doubt%place:28
%elsewhere:84 %elsewhere%on_way:31 %elsewhere%place:64 %elsewhere%staff:-36 %elsewhere%who:34 %fails:-65
%fails%how_long:-37 %fails%opening:29 %fails%place:-102 %family:-52 %family%question:-27 %family%refuse:43
%gone_car:-74 %gone_car%place:-25 %how_long:-42 %how_long%lift:-34 %how_long%money:45 %how_long%opening:198
%how_long%place:-38 %how_long%question:34 %how_long%shift_it:37 %how_long%staff:37 %how_long%wrong_one:-28
%leave_me:-93 %leave_me%place:-25 %lift:-102 %lift%opening:-44 %lift%place:-26 %machine:-131 %machine%staff:-40
%meaning:-84 %meaning%place:-31 %meaning%question:-63 %message:-87 %message%place:-34 %message%question:-49
%money:-78 %money%opening:46 %money%question:-109 %noise:-90 %noise%place:-54 %noise%question:-47 %odometer:-27
%on_way:-48 %on_way%opening:71 %on_way%place:-32 %on_way%question:226 %on_way%staff:54 %opening:458
%opening%question:200 %opening%refuse:87 %opening%season:44 %opening%shift_it:33 %opening%staff:101 %pay_day:-66
%pay_day%question:-36 %place:428 %place%question:300 %place%staff:69 %place%start_again:57 %place%who:90
%question:118 %question%season:-33 %question%shift_it:33 %question%thanks:34 %question%who:-101 %shift_it:46
%staff:48 %who:-53 %wrong_one:-46 @?:195 @after_visit:-74 @car:-73 @confirm_stop:-30 @day:55 @nothing:47
@odometer:-74 @time:45 @walk_in:77 ^_a:37 ^_abren:75 ^_and:-58 ^_are:56 ^_como:74 ^_de:-159 ^_deje:-25 ^_did:47
^_disculpe:-47 ^_do:-36 ^_donde:45 ^_drop:29 ^_el:-33 ^_en:47 ^_hasta:63 ^_hours:57 ^_how:26 ^_i:-49 ^_id:-30
^_it:-30 ^_la:-95 ^_llego:-74 ^_los:-30 ^_me:70 ^_my:-59 ^_no:44 ^_open:49 ^_por:45 ^_price:28 ^_puedo:-27 ^_que:-45
^_send:86 ^_the:-77 ^_this:-26 ^_trabajan:42 ^_what:-73 ^_where:-106 ^_which:53 ^_who:-68 ^_why:-56 ^_y:-35
a__horas:41 a_bot:-75 a_que:66 abiertos:50 abren:242 abren_$:54 abren_los:30 abren_manana:27 address:140 address_$:77
again:25 agarro:35 al:33 alley:46 an:-36 and:71 and__are:-48 and__i:28 and__is:25 and_you:-55 are:150 are_$:-64
are__a:-85 are__charging:-34 are__closed:28 are__from:29 are__hours:34 are__in:45 are__on:76 are__open:118
are__still:49 are__there:77 are_you:233 are_your:39 at:66 at_or:52 atras:25 bay:25 be:-62 before_$:32
before__open:-27 before_you:-42 behind_the:47 bien:-52 blue:34 bot:-75 bot_$:-75 bridge:29 building:43 by:111
by__mall:29 by_the:139 calle:85 cambiaron:37 can:26 can__come:28 can__do:-35 can_i:74 can_you:-26 cant:37
cant__you:25 car:-35 cerraron:50 charging:-37 cierran:80 cierran_$:28 close:61 come:35 como:-30 como_llego:101
cual:134 cual__es:32 cual__su:37 cual_de:33 cual_es:51 cuanto__y:38 days__you:27 de:-63 de__dos:33 de__es:-69
de__me:-51 de__son:-45 de_donde:-211 de_la:52 de_las:33 de_ustedes:27 del:45 desde:39 dia:-26 dias:34 did:-60
did__get:-72 did__move:55 did_you:-40 direccion:65 direccion_$:77 direccion__favor:38 direccion_por:38 directions:41
disculpe:-48 do:122 do_$:-30 do__close:60 do__get:124 do__know:-42 do__open:65 do__shut:57 do__turn:-40 do_i:147
do_you:89 domingos:44 domingos_$:49 donde:49 donde__escriben:-43 donde_es:27 donde_estan:82 donde_me:-35
donde_quedan:34 donut:27 door:32 doors:-65 doors_open:-47 dos__es:39 drop:72 drop_it:37 drop_me:26 due:-26 dura:-29
dura_$:-25 early:58 el:122 el__de:40 el__dia:-27 el_de:34 el_mismo:58 el_taller:41 en:128 en_$:-31 en__calle:32
en__mismo:85 en_cual:49 en_el:89 en_otro:-29 en_que:114 encuentro:28 entrada:33 entrance:53 entro:34 entro_$:29
es:174 es_$:71 es__horario:31 es_el:35 es_este:-33 es_la:43 es_por:29 es_su:45 escriben:-45 escriben_$:-43 eso:-53
eso_$:-34 esta_bien:-27 estan:71 estan_$:77 estan__el:26 estan_abiertos:49 este:-42 exit:63 far:26 far__you:28
far_are:28 favor:44 favor_$:38 find:25 find_you:40 first:-33 for:29 friday:-61 from:34 from_the:74 front:41
front_$:41 get:70 get__you:71 get_my:-69 get_there:107 get_to:80 got:-52 guys_$:-44 guys_open:38 hasta:106
hasta__hora:129 hasta_que:106 have:-74 hiring:-59 hood:-55 hora:82 hora_abren:60 hora_cierran:54 hora_estan:27
horario:46 hours_is:-33 how__are:73 how__hours:-160 how__i:86 how_do:80 how_far:31 how_late:91 how_long:-32
how_many:-164 human:-32 i:53 i__it:29 i__only:-29 i__there:77 i__these:-54 i__to:46 i__up:40 i__you:-26 i_can:-27
i_come:55 i_drop:29 i_get:124 i_know:-38 i_pull:33 i_turn:-72 i_use:34 id:-43 if:-39 if__open:-30 ill:-29 in_$:88
in_the:-45 info:-68 info_$:-68 interstate:26 is:53 is__a:-33 is__address:61 is__at:-36 is__open:-64 is__the:101
is__there:25 is__wifi:-27 is_friday:-48 is_it:110 is_the:50 is_this:-49 is_thursday:-43 is_your:96 it_$:-29 it__a:28
it__of:26 it_off:31 it_the:65 know:-50 know_you:-36 la:97 la__esta:-28 la__que:-38 la__se:-57 la_direccion:-28
la_entrada:30 la_hora:-34 la_manana:-31 la_misma:36 la_ubicacion:62 lado:-68 lado_$:-32 las_dos:26 late:115
late__i:44 late__you:46 late_are:53 le:-27 llego:-54 llego_$:25 llego_como:-32 llego_en:-34 lo:-91 local:63
location:91 location_$:54 lol:-33 lol_$:-25 los:51 los_domingos:39 los_frenos:-30 lot:-49 lugar:73 lugar_$:50
lunch:26 main:74 mal:-29 mall:30 mall_$:36 manda:51 mandame:51 many:-164 many__is:-32 many_hours:-158 me_$:-33
me__la:100 me_a:78 me_escriben:-45 me_manda:52 me_pasa:45 me_queda:-28 me_your:25 mi:-30 min:-39 misma:35 mismo:62
mismo_dia:-27 move:60 my:-143 my_hood:-39 my_info:-66 need:-25 new:31 north:62 now_$:35 numero:-27 numero_$:-40 o:88
o__de:34 of:25 of_your:40 off:-40 off_$:-54 on:119 on__road:-49 on_saturdays:28 one:70 one__the:30 only:-53 open:71
open_$:-164 open__the:-36 opening:-27 or:151 or_$:55 or_the:46 otro__mas:25 otro_lado:-26 out:41 out_front:35 over:37
over__the:36 over_by:37 parking:-41 parking_lot:-29 pasa:41 past:40 pin:158 place:45 please:67 please_$:73 popped:-55
por:102 por__rumbo:28 por_cual:35 por_donde:73 por_favor:36 price:32 problema:-25 pueblo:31 puente:25 pull:31 que:52
que_$:-35 que__abren:74 que__cierran:65 que__eso:-29 que__estan:62 que__puedo:31 que__reciben:37 que__tienen:36
que_calle:39 que_dias:28 que_es:-42 que_hora:149 que_horario:33 que_horas:41 que_me:-35 que_tan:-48 queda:-129
queda_$:-63 queda_el:-25 quedan:53 reciben:37 remind:32 remind_me:32 right_$:29 road:-60 road_$:-47 rumbo:28
sabado:25 sabado_$:27 sabado__la:-25 salida:28 same__as:27 sat:25 saturday:37 saturday_hours:46 se:-36 send:94
send__a:53 send_me:82 shop_$:50 shop__the:36 shop__this:-47 shop_is:-27 shut:72 shut_$:48 side:120 side_$:37
side__the:37 side_of:37 siempre_$:25 siguen:109 siguen__el:79 siguen_en:92 son:-40 son_$:-53 spot:27 st:48 st_$:53
still:73 still__the:50 street:68 su:64 su_horario:31 sunday:29 sundays:31 take:-29 tan:-72 tan__estan:-54 tarde:-35
tarde_$:-35 that:-31 that_$:-66 that_the:49 the:151 the__behind:38 the__by:38 the__in:-41 the__on:45 the__open:-47
the__place:27 the__side:40 the__street:29 the__tire:27 the__with:38 the_address:44 the_blue:35 the_bridge:29
the_doors:-65 the_interstate:26 the_mall:25 the_north:42 the_one:34 the_place:28 the_road:-57 the_shop:46 the_th:-36
then:-27 there:57 there_$:46 there_a:-25 there_is:-27 there_on:31 these:-75 these_off:-58 this:-74 this_$:-60
thursday_at:-43 till:38 till__time:27 time:58 time__you:57 time_do:66 tires:-36 tires_$:-38 to:41 to_$:38 to_you:61
todavia_estan:31 today:25 tomorrow:29 too:-26 town:52 trabajan:91 turn:-104 turn_the:-28 ubicacion:69 ubicacion_$:62
un:-64 una:-31 up:52 up_$:49 up_to:25 use:27 ustedes:30 ustedes_$:40 was:-43 weekend:-69 weekend_$:-50 what:40
what__do:72 what__it:-32 what__that:-26 what__you:-44 what__your:102 what_do:-25 what_street:25 what_time:114
when:-77 when__turn:-35 when__you:92 when_do:88 when_i:-70 when_the:-68 when_you:-39 where:28 where_are:48
where_did:-77 where_you:26 which:127 which__do:86 which__of:26 which_exit:31 which_shop:-73 which_side:34 who:-106
who__you:-80 who_are:-79 why:-64 why_$:-36 wifi:-44 wifi_$:-33 with_$:-33 with_the:45 y:92 y_donde:38 y_en:46 yeah:28
yes__are:27 you:183 you_$:-31 you__bot:-75 you__do:-29 you__my:-79 you__on:60 you__open:65 you__the:48 you_a:-86
you_are:-71 you_at:26 you_charging:-34 you_close:62 you_closed:28 you_do:-28 you_from:58 you_get:-87 you_in:59
you_move:55 you_on:110 you_open:198 you_shut:74 you_still:95 you_the:38 you_with:-29 your:131 your__hours:30
your_hours:60 your_shop:30
"""
