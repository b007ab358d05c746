"""What speaks for and against `where`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "where"
BIAS = -185
WEIGHTS = """\
#abad:33 #abaj:50 #abie:45 #able:17 #abou:-29 #abre:207 #acar:-19 #acat:-17 #acia:21 #acio:44 #acro:-31 #addr:111
#adio:-19 #adre:56 #agai:22 #agar:39 #aile:25 #ajan:78 #ales:64 #alid:44 #alig:-26 #alle:127 #alon:14 #alwa:24
#anda:52 #ande:23 #andm:43 #ando:-103 #ange:14 #anks:15 #anta:14 #arde:-31 #ards:-19 #arge:-23 #argi:-36 #ario:40
#arki:-31 #aron:41 #arou:17 #arro:51 #arte:19 #asad:-15 #asta:32 #aste:24 #atan:-53 #atch:-20 #ated:26 #atio:46
#avor:33 #ayer:15 #bado:33 #baja:55 #bajo:-29 #bank:31 #been:18 #befo:-23 #biar:43 #bica:78 #bien:-48 #bier:44
#blue:21 #body:20 #bout:-31 #brak:-15 #bren:209 #brid:19 #brin:-19 #buil:45 #caci:57 #call:40 #canc:-14 #cant:43
#card:-19 #caro:-23 #cate:29 #cati:71 #ccio:72 #cerr:41 #char:-59 #chec:-39 #cias:21 #cier:66 #cion:124 #cita:17
#clas:19 #clos:59 #come:26 #como:-20 #cont:-70 #crib:-47 #cros:-15 #ctio:27 #cual:143 #cuan:-19 #cuen:18 #cuer:21
#culp:-43 #dame:18 #days:26 #ddre:111 #deje:-34 #deme:18 #depe:16 #dias:33 #diga:16 #ding:41 #dire:99 #disc:-45
#dnes:14 #does:-33 #doin:-21 #domi:91 #dond:79 #door:-46 #dres:168 #drop:61 #dshi:-16 #dura:-24 #ease:52 #east:33
#eblo:21 #ebod:22 #ecci:72 #ecti:28 #ecto:15 #edan:49 #edne:15 #eeke:-24 #eewa:20 #efer:-18 #efor:-23 #eken:-24
#empo:-17 #empr:15 #encu:20 #ende:17 #endo:21 #ends:19 #engo:-15 #enid:15 #enos:-22 #ente:29 #entr:79 #ents:-25
#epen:16 #erca:15 #erda:47 #erdo:19 #erfe:15 #eron:-18 #erra:110 #erst:21 #erti:-18 #erto:71 #escr:-43 #essa:-17
#este:-30 #even:47 #ever:-26 #eway:37 #exit:43 #favo:33 #filt:-20 #find:20 #fore:-25 #frid:-62 #fron:30 #gain:22
#garr:41 #gast:-41 #gate:19 #ging:-36 #gnme:-26 #grac:21 #guen:81 #guys:59 #hace:-48 #hang:15 #harg:-59 #hast:73
#have:-52 #heel:-15 #here:53 #hese:-75 #hich:88 #hiel:-16 #hile:17 #hood:-48 #hora:128 #hour:30 #huma:-25 #hurs:-31
#iado:-15 #iaro:40 #iben:-21 #icac:58 #iday:-61 #idge:20 #iend:18 #ierr:67 #iert:51 #ight:27 #ignm:-26 #igue:99
#ildi:45 #iler:25 #imer:-14 #inds:-16 #info:-65 #ingo:64 #ings:14 #inst:-15 #inte:26 #inut:-26 #irec:99 #ires:-29
#iscu:-43 #isma:22 #ismo:53 #ivew:18 #keep:20 #kend:-24 #keys:-14 #king:-56 #know:-50 #lace:18 #lado:-46 #land:40
#lass:19 #last:-16 #late:97 #ldin:45 #leas:61 #left:22 #lego:-37 #lema:-20 #leme:15 #lida:45 #ligh:18 #lign:-26
#like:-23 #list:-26 #lleg:-51 #ller:37 #loca:149 #lock:-16 #long:-23 #lose:57 #ltim:17 #luga:71 #lune:-15 #lway:24
#main:80 #mall:25 #mand:78 #many:-126 #mark:44 #mart:15 #mean:-15 #mebo:22 #menm:15 #ment:-38 #mero:-28 #mess:-19
#ming:55 #minu:-26 #mism:75 #morr:19 #moto:-24 #move:58 #much:-22 #nail:15 #ncel:-14 #ncue:20 #ndam:20 #nday:44
#ndem:19 #ndsh:-16 #need:-16 #nesd:15 #neve:-23 #nida:15 #ning:-20 #nmen:-26 #noch:21 #nort:50 #ntas:15 #nter:27
#ntre:-19 #ntro:38 #nume:-28 #oble:-21 #ocat:118 #oche:21 #oday:32 #oing:-28 #omeb:22 #omin:56 #omor:19 #onde:74
#only:-37 #ontr:-64 #oors:-44 #open:20 #oppe:-48 #orar:45 #orci:14 #orro:18 #orry:-22 #orth:50 #osed:19 #otro:-31
#ould:-27 #ours:42 #park:-37 #pasa:46 #paso:-14 #past:32 #pend:16 #peni:-31 #pens:-20 #perf:15 #pick:17 #plac:14
#plea:54 #popp:-47 #pped:-43 #pref:-22 #prim:-15 #prob:-15 #prop:14 #pueb:21 #pued:-38 #puer:31 #pull:33 #qued:-53
#quie:-17 #raci:21 #rack:21 #rada:17 #radi:-19 #rail:24 #rake:-15 #ranc:33 #rari:45 #raro:33 #rata:-54 #rato:-17
#rcio:14 #rdad:33 #rdes:14 #recc:66 #reco:16 #rect:32 #reet:61 #reew:20 #refe:-18 #reno:-15 #ress:167 #rfec:15
#rgin:-36 #ribe:-44 #rida:-62 #ridg:20 #rime:-14 #ring:-75 #rkin:-32 #rnin:-17 #road:-40 #robl:-21 #ront:28 #ross:-15
#rran:66 #rrar:36 #rros:14 #rrow:18 #rsda:-31 #rsta:21 #rtos:48 #rumb:14 #saba:33 #saca:-17 #sage:-17 #sale:42
#sali:35 #same:18 #scri:-47 #scul:-43 #sday:-28 #send:48 #sent:-24 #shie:-16 #shop:17 #shut:42 #side:104 #sigu:98
#sist:14 #slot:-15 #sorr:-19 #spot:41 #ssag:-17 #stad:-40 #stan:53 #star:-17 #stea:-14 #ster:39 #stil:67 #stop:-22
#stre:59 #sund:45 #tado:-36 #take:-39 #talk:-16 #tall:36 #tand:-55 #tard:-33 #tari:-16 #tate:19 #tati:-23 #teng:-21
#ters:21 #text:-34 #that:-68 #then:-22 #ther:39 #thes:-75 #they:-20 #thin:14 #this:-92 #thur:-33 #tiem:-18 #till:114
#tima:17 #time:44 #ting:-18 #tion:72 #toca:16 #toda:25 #tomo:17 #town:71 #trac:23 #trad:15 #trae:-14 #trai:24
#tran:33 #trat:-55 #tree:60 #turn:-103 #uand:-20 #ubic:78 #uebl:21 #ueda:-75 #uent:18 #uerd:21 #uert:31 #ueve:-20
#ugar:71 #uien:-17 #uild:45 #ulpe:-43 #ulti:16 #uman:-25 #umer:-28 #unda:42 #unes:-15 #unto:14 #urni:-16 #ursd:-31
#vaca:-18 #vale:15 #veni:49 #verd:31 #vewa:18 #wait:-33 #ways:23 #wedn:15 #week:-23 #went:-14 #what:45 #whee:-15
#when:-56 #wher:29 #whic:93 #whil:17 #wifi:-36 #will:-19 #wind:-17 #with:-24 #woul:-32 #yeah:28 #ying:-16 #your:92
%again_later%agree:-27 %again_later%bring:28 %again_later%busy:-16 %again_later%doubt:16 %again_later%elsewhere:-24
%again_later%how_long:62 %again_later%lift:-17 %again_later%message:-18 %again_later%money:15 %again_later%on_way:-30
%again_later%opening:18 %again_later%phone:-16 %again_later%place:14 %again_later%question:69 %again_later%refuse:34
%again_later%shift_it:-36 %again_later%start_again:27 %again_later%thanks:21 %agree:-34 %agree%away:-17
%agree%bring:-29 %agree%call_off:-16 %agree%do_it:-26 %agree%elsewhere:36 %agree%family:20 %agree%lift:-21
%agree%on_way:30 %agree%opening:99 %agree%place:28 %agree%question:37 %agree%staff:24 %away:46 %away%bring:-19
%away%call_off:-27 %away%do_it:17 %away%elsewhere:89 %away%on_way:-14 %away%question:58 %away%staff:-14 %bad:-56
%bad%place:-19 %bad%question:-22 %bring:92 %bring%call_off:62 %bring%do_it:85 %bring%fails:21 %bring%leak:40
%bring%leave_me:-28 %bring%lift:-25 %bring%odometer:19 %bring%on_way:-19 %bring%opening:-29 %bring%question:34
%bring%refuse:-22 %bring%start_again:25 %busy%how_long:21 %busy%opening:30 %busy%place:-33 %call_off%car_part:32
%call_off%elsewhere:-14 %call_off%family:17 %call_off%how_long:22 %call_off%leave_me:-24 %call_off%message:-17
%call_off%on_way:-29 %call_off%opening:35 %call_off%phone:-20 %call_off%place:-70 %call_off%season:20
%call_off%staff:19 %call_off%thanks:18 %car:-55 %car%opening:-17 %car%place:-23 %car%question:-18 %car_part:-46
%car_part%do_it:23 %car_part%elsewhere:-15 %car_part%fails:-78 %car_part%leak:-14 %car_part%money:52
%car_part%noise:-28 %car_part%odometer:-16 %car_part%opening:-30 %car_part%question:-79 %car_part%who:18
%car_part%wrong_one:21 %do_it:17 %do_it%elsewhere:-16 %do_it%fails:15 %do_it%gone_car:-14 %do_it%leak:30
%do_it%place:-76 %do_it%question:-56 %do_it%refuse:26 %do_it%shift_it:71 %doubt:39 %doubt%opening:20 %doubt%place:34
%doubt%question:36 %doubt%refuse:15 %doubt%wrong_one:14 %elsewhere:88 %elsewhere%on_way:44 %elsewhere%place:71
%elsewhere%shift_it:-34 %elsewhere%staff:-45 %elsewhere%who:36 %fails:-56 %fails%how_long:-30 %fails%leak:15
%fails%on_way:21 %fails%opening:23 %fails%place:-63 %fails%question:24 %fails%shift_it:15 %family:-40
%family%odometer:15 %family%opening:19 %family%place:-28 %family%question:-33 %family%refuse:40 %family%thanks:15
%family%wrong_one:20 %gone_car:-53 %gone_car%question:-15 %how_long:-29 %how_long%lift:-16 %how_long%money:18
%how_long%opening:183 %how_long%place:-37 %how_long%refuse:15 %how_long%season:18 %how_long%shift_it:34
%how_long%staff:36 %how_long%thanks:16 %how_long%wrong_one:-20 %leak:36 %leak%on_way:-15 %leak%place:-18
%leak%shift_it:16 %leave_me:-87 %leave_me%odometer:-25 %leave_me%on_way:-17 %leave_me%opening:-27 %lift:-55
%lift%opening:-35 %lift%refuse:16 %lift%thanks:17 %machine:-108 %machine%staff:-28 %meaning:-67 %meaning%question:-46
%message:-75 %message%on_way:-14 %message%place:-25 %message%question:-46 %message%start_again:-14 %money:-92
%money%opening:32 %money%question:-91 %noise:-73 %noise%on_way:-15 %noise%place:-38 %noise%question:-44 %odometer:-24
%odometer%opening:-14 %odometer%refuse:20 %on_way:-18 %on_way%opening:41 %on_way%phone:37 %on_way%place:-14
%on_way%question:165 %on_way%refuse:-26 %on_way%shift_it:-15 %on_way%staff:53 %opening:471 %opening%place:15
%opening%question:202 %opening%refuse:67 %opening%season:33 %opening%shift_it:46 %opening%staff:74
%opening%start_again:22 %pay_day:-34 %pay_day%question:-16 %phone:-14 %phone%place:18 %phone%question:32
%phone%refuse:-15 %place:468 %place%question:293 %place%season:-19 %place%staff:69 %place%start_again:42
%place%who:66 %place%wrong_one:26 %question:102 %question%refuse:24 %question%season:-26 %question%shift_it:25
%question%staff:-63 %question%start_again:15 %question%thanks:32 %question%who:-105 %refuse:-36 %refuse%shift_it:22
%refuse%thanks:21 %season:22 %season%staff:23 %shake:-17 %shift_it:23 %staff:26 %start_again:32 %who:-67
%wrong_one:-68 @?:191 @after_visit:-57 @car:-54 @confirm_stop:-18 @day:52 @later:17 @nothing:45 @odometer:-76
@offers:15 @reading:-38 @time:57 @times:35 @walk_in:63 ^_a:53 ^_abren:70 ^_and:-47 ^_are:52 ^_been:24 ^_cant:34
^_como:66 ^_cual:44 ^_de:-136 ^_deje:-26 ^_depende:18 ^_did:50 ^_disculpe:-42 ^_do:-35 ^_donde:76 ^_drop:42 ^_el:-18
^_es:-18 ^_eso:16 ^_first:19 ^_got:-17 ^_hableme:16 ^_hace:-19 ^_hasta:41 ^_i:-41 ^_id:-32 ^_im:15 ^_it:-18
^_just:-15 ^_la:-80 ^_llego:-58 ^_los:-24 ^_me:73 ^_my:-51 ^_no:31 ^_oil:15 ^_para:-16 ^_perfecto:16 ^_please:-18
^_por:32 ^_puedo:-27 ^_que:-59 ^_saturday:-24 ^_si:42 ^_sorry:-16 ^_su:19 ^_the:-52 ^_there:-17 ^_this:-28 ^_took:-14
^_trabajan:35 ^_voy:-16 ^_wednesday:19 ^_what:-71 ^_where:-64 ^_which:53 ^_who:-63 ^_why:-41 ^_y:-29 ^_yeah:16
^_yes:23 a:-30 a__hora:22 a__late:14 a__on:18 a_bot:-65 a_nail:15 a_que:43 abiertos:45 about:-28 abren:210 abren_$:54
abren_los:26 across:-31 address:111 address_$:79 address_again:15 after_the:17 again:22 again_$:17 agarro:42 ahi:-15
al:31 all:-34 always:24 am:-16 an:-29 and__are:-31 and__i:17 and__is:23 and__on:15 and_could:17 and_what:20
and_you:-45 ando:-19 any:-14 aqui_$:19 are:151 are_$:-41 are__a:-72 are__at:19 are__closed:33 are__hours:35
are__located:19 are__on:83 are__open:127 are__still:39 are__the:19 are__there:36 are_you:195 are_your:44 around:20
as:17 at:47 at__light:23 at_or:52 at_the:26 back_$:17 bank:31 bay:19 be:-56 be_there:-14 been:18 been_a:25 before:-23
before_$:28 before__open:-20 before_you:-45 behind_the:28 bien:-46 blue:21 bot:-65 bot_$:-65 bridge:20
buenas_tardes:14 building:45 by:98 by_a:14 by_the:114 calle:56 cambiaron:40 can:33 can__come:25 can__do:-36
can__pick:29 can_i:60 cant:43 cant__in:20 car:-30 cards:-18 cards_$:-18 carros:14 change:19 charging:-36 cierran:68
cierran_$:37 cita:19 cita_$:18 close:36 closed:24 closed_$:-18 come:28 coming__the:14 como:-20 con:-15 could_i:15
cual:121 cual__la:26 cual__su:44 cual_de:37 cual_es:46 cuando:-20 cuanto__y:22 cuanto_vale:17 day_$:19 day_i:-14
de:-63 de__dos:37 de__es:-63 de__me:-39 de__por:14 de_donde:-177 de_la:36 de_las:36 de_noche:19 deje:-31 del:31
depende:18 dia:-34 dia_$:-21 dias:33 did:-33 did__get:-64 did_you:-14 diga:16 direccion:67 direccion_$:70
disculpe:-43 do:116 do_$:-30 do__close:48 do__get:129 do__guys:-26 do__know:-41 do__open:71 do__work:25 do_i:125
do_you:97 does:-32 doing:-21 domingo:19 domingo_$:26 donde:57 donde__escriben:-38 donde_es:15 donde_estan:61
donde_me:-24 donde_quedan:36 doors:-44 dos:27 drive:-15 driveway:18 drop:64 drop__off:17 drop_it:17 drop_me:41
due:-24 dura:-23 early:15 easter:26 easter_$:26 el:83 el__del:20 el__dia:-34 el__en:-22 el_de:17 el_freeway:19
el_mismo:53 el_sabado:-14 el_taller:31 el_viernes:-22 en:85 en_$:-25 en__calle:20 en__parte:20 en_el:98 en_otro:-20
en_que:49 en_un:-19 encuentro:20 entendi:18 entrada:17 entro:21 es:133 es__cita:22 es__el:19 es__horario:33
es__numero:-18 es_este:-24 es_la:45 es_mi:22 es_por:36 es_su:52 escriben:-40 escriben_$:-38 eso:-18 eso_$:-19
esta__el:16 esta_bien:-23 esta_en:16 estan:55 estan_$:89 estan_abiertos:43 estaria:-16 este:-28 este_numero:-18
estoy__la:15 evening:15 exit:43 far:16 favor:34 favor_$:23 favor_de:14 find:20 first_thing:20 for:23 for_$:-21
for_me:-16 for_my:25 for_what:-18 for_you:23 freeway:20 friday:-63 from_the:36 front:30 front_$:33 get:83 get_it:16
get_my:-67 get_there:88 get_to:81 go:-15 go_to:-15 got:-38 got_$:-19 gracias:21 guys:36 guys_$:-46 guys_do:-31
guys_open:30 hableme:15 hableme_para:16 hace:-40 hasta:73 hasta__hora:82 hasta_que:75 have:-49 here:-19 hood:-48
hora:78 hora_abren:51 hora_cierran:47 hora_estan:19 horario:56 hours:43 hours__you:-18 hours_for:23 hours_is:-22
how:-40 how__are:55 how__can:25 how__hours:-121 how__i:84 how__the:-17 how_do:80 how_late:76 how_long:-36
how_many:-126 hoy:30 hoy_$:29 human:-25 i:37 i__it:29 i__that:-19 i__the:-23 i__there:85 i__these:-54 i__to:30
i__up:43 i__you:-39 i_be:-16 i_can:-17 i_come:34 i_drop:17 i_get:138 i_got:-15 i_have:-19 i_know:-38 i_pick:29
i_turn:-60 i_use:21 id:-39 id__the:-22 id_prefer:-18 if:-72 ill:-15 im__the:14 im_at:22 im_in:19 in_$:44 in__drop:-15
in_the:-26 info:-64 info_$:-64 is:26 is__a:-15 is__address:57 is__at:-30 is__open:-56 is__the:31 is_friday:-39
is_it:60 is_my:-14 is_the:82 is_this:-57 is_your:77 ish:17 it:-63 it_$:-16 it__a:15 it__and:16 it__or:17 it_off:27
it_the:25 keep:20 keys:-14 know:-50 know_you:-36 la:84 la__es:25 la__esta:-22 la__o:16 la__que:-17 la__se:-51
la_calle:24 la_direccion:-34 la_manana:-15 la_misma:23 la_ultima:19 labor_$:-14 labor_day:16 lado:-46 lado_$:-29
las:15 las_$:-19 las_dos:38 last:-16 last__and:15 last_one:15 last_time:-18 late:95 late__you:46 late_are:45 le:-14
le__y:18 le_toca:17 left:22 light:20 like:-22 llegar_$:21 llegar_a:-16 llego:-37 llego_$:28 llego_en:-26 lo:-64
located:23 located_$:17 location:89 location_$:59 lol:-22 lol_$:-18 long:-20 los:47 los_frenos:-23 los_sabados:28
lot:-40 lugar:71 lugar_$:55 lunes:-15 mal:-26 mal_$:-17 mall:26 man:21 manda:41 many:-126 many__is:-22
many_hours:-121 mas:-14 mas__como:-14 me:19 me_$:-27 me__como:16 me__el:19 me__la:99 me__the:-14 me_a:39
me_escriben:-40 me_manda:42 me_puede:-15 me_queda:-16 me_your:21 mean:-14 mi:-25 mi_cita:22 mi_numero:-20 millas:14
min:-48 min_$:-16 min_tarde:-21 misma:22 mismo:53 mismo_dia:-34 move:63 much:-14 my:-110 my_hood:-36 my_info:-62
my_sister:15 nail:15 near:-17 need:-24 new:19 no__is:-22 no__lunes:-16 no__que:17 no_gracias:18 no_what:-26 noche:16
noche_$:16 north:50 not:-19 now_$:29 numero:-27 numero_$:-30 o:39 off:-52 off_$:-58 off_for:25 oil_change:14 old:25
on:118 on_$:-16 on__road:-42 on__side:14 on_saturday:29 on_the:-28 one:87 one__it:26 one__the:16 one_and:14 one_is:16
only:-37 open:66 open_$:-136 open_on:-15 open_today:21 opening:-24 or:136 or_$:39 or_the:39 otro:-31 otro_lado:-25
otro_taller:-14 out:15 over_by:19 para__me:23 parking:-31 parking_lot:-28 parte:18 pasa:52 paso:-14 past:33 past_$:17
people_$:15 perfecto:15 pick:18 pick_up:24 place:23 place_$:23 please:54 please_$:60 por:76 por_donde:55 por_favor:21
por_la:14 prefer:-18 problema:-20 pueblo:21 puede:-18 puedo__a:-16 puedo_llegar:-22 pull:29 que:28 que__abren:66
que__cierran:56 que__eso:-15 que__estan:60 que__toca:17 que_es:-30 que_hora:110 que_parte:20 que_tan:-48 queda:-115
queda_$:-62 quedan:56 quedan_$:25 quien:-18 radio:-19 rato:-17 right_$:22 right_now:-24 road:-33 road_$:-40
sabado_$:15 sabado__la:-15 sabado_en:-15 sabados:30 sabados_$:22 salida:44 same:18 saturday_$:20 se:-69 se__de:23
se_me:-23 send:47 send_me:28 sent:-16 shop:18 shop_$:77 shop__this:-32 shop_is:-16 shut:43 shut_$:49 si:30 si__el:22
si_y:14 side:108 side_$:21 side_of:23 siendo:15 siguen:85 sister:15 slot:-15 somebody:22 son:-38 son_$:-51 sorry:-19
soy:14 spot:41 st:54 st_$:61 station:-18 still:68 still__the:54 stop:-19 street:61 su:86 su_horario:33 sunday:25
sunday_$:24 sunday_or:-18 sundays:20 take:-40 taller:39 taller_$:33 tan:-60 tarde:-35 tarde_$:-34 tardes:14 tengo:-14
text:-15 that:-68 that_$:-49 that_the:16 the:104 the__again:15 the__are:14 the__box:14 the__by:32 the__day:-15
the__if:-22 the__in:-34 the__is:-14 the__on:15 the__place:24 the__side:31 the__street:30 the__tire:21 the__with:15
the_address:42 the_bank:33 the_blue:23 the_bridge:20 the_doors:-42 the_drop:14 the_first:-20 the_light:23 the_mall:26
the_old:28 the_one:23 the_only:-14 the_price:-15 the_right:15 the_road:-40 the_shop:32 the_street:-27 the_th:-15
then:-22 there:43 there_is:-21 there_on:41 these:-75 they:-18 they_$:-14 this:-92 this_$:-49 thursday:-41
thursday_at:-44 tiempo:-17 tienen_$:18 tienen__de:15 till:56 time:48 time__i:21 time__you:62 time_do:73 tire:16
tires:-28 tires_$:-23 to:44 to_$:46 to__from:17 to__it:-15 to__these:-16 to_it:-18 to_you:61 toca:16 today:32
today_$:29 tomorrow:19 tomorrow_$:33 too:-14 town:59 town_$:14 trabajan:79 trabajo:-15 trae:-14 trailer:27 turn:-78
turn_the:-20 ultima:18 un:-64 una:-25 up:49 up_$:50 up_to:19 us:14 use:28 ustedes_$:16 vale:15 verdad:35 verdad_$:25
voy_a:-18 voy_tarde:14 was:-46 way:-21 we:-17 wednesday:17 weekend:-43 weekend_$:-27 went:-14 what:47 what__do:68
what__it:-35 what__that:-21 what__the:24 what__you:-53 what__your:99 what_do:-20 what_is:34 what_street:25
what_time:100 wheel:-15 when:-44 when__turn:-24 when__you:85 when_do:73 when_i:-42 when_the:-32 when_you:-36 where:32
where__the:-15 where_are:46 where_did:-61 where_is:27 where_you:17 which:94 which__are:-27 which__do:76 which__is:17
which_exit:38 which_shop:-57 while:17 who:-98 who__you:-55 who_are:-54 who_is:-14 why:-44 why_$:-23 wifi:-36
wifi_$:-28 will:-19 with:-14 with_$:-40 with_a:18 with_the:18 work:15 would:-31 would__be:-19 y:80 y__que:15
y_donde:41 y_en:30 yeah:28 yes__are:41 you:151 you_$:-33 you__anything:16 you__bot:-65 you__do:-27 you__my:-75
you__on:52 you__open:32 you__the:15 you__today:31 you__what:16 you_a:-73 you_are:-50 you_at:28 you_close:33
you_closed:33 you_from:39 you_get:-73 you_guys:36 you_in:36 you_located:19 you_need:-21 you_on:91 you_open:199
you_shut:59 you_still:65 you_take:-28 you_the:42 you_there:-53 you_with:-36 you_work:25 your:93 your__hours:24
your_address:20 your_hours:42 your_shop:29
"""
