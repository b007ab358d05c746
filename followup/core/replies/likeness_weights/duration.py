"""What speaks for and against `duration`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "duration"
BIAS = -233
WEIGHTS = """\
#abaj:41 #aber:33 #abor:-41 #abou:-29 #abre:-78 #afte:-85 #agar:-36 #ails:-82 #aite:-33 #aiti:-38 #alca:87 #alcu:33
#algo:103 #alid:55 #alki:46 #alre:-38 #alta:62 #amos:-32 #ance:-28 #anda:-54 #ando:-60 #anta:41 #ante:49 #anti:-25
#anto:169 #anyt:-29 #anza:63 #anzo:37 #apid:119 #appe:-30 #arda:309 #arde:-51 #ards:-26 #arge:-28 #aria:169 #ario:-26
#arlo:61 #aron:-122 #arou:60 #asta:-55 #atan:66 #ater:-52 #atis:-43 #atro:25 #atur:31 #avor:30 #back:51 #bajo:28
#been:-60 #befo:-60 #bout:-29 #bran:-27 #brea:53 #bren:-78 #brin:25 #buen:-26 #cafe:44 #calc:33 #camb:-31 #cant:-31
#canz:90 #card:-27 #cerl:36 #cesi:-25 #char:-32 #chec:-25 #cier:-72 #cion:-25 #cloc:28 #clos:31 #cobr:-35 #coge:96
#cojo:39 #come:-25 #conf:34 #cont:-27 #cosa:46 #cost:38 #cual:-41 #cuan:198 #cuat:27 #cues:-43 #dado:105 #dara:33
#dari:55 #daro:-61 #days:-48 #deja:70 #dejo:50 #demo:46 #depe:42 #deti:29 #dias:112 #dila:76 #dito:27 #does:142
#done:109 #dorm:29 #driv:-83 #dura:54 #eady:52 #eave:39 #eces:-26 #ecog:77 #ecoj:36 #edan:-45 #edar:56 #edes:-27
#edio:36 #efor:-60 #egan:115 #egre:32 #ejar:109 #emor:34 #empo:118 #endi:-26 #enen:30 #ener:54 #enga:-28 #engo:68
#enou:62 #ente:-35 #entr:165 #epen:41 #erar:31 #eria:-61 #erlo:45 #ermi:49 #erni:111 #erno:-73 #erra:-73 #ervi:83
#esan:28 #esas:-30 #esit:-26 #espe:51 #esta:115 #esto:-47 #etie:25 #evan:25 #evar:-26 #ever:-31 #fail:-94 #falt:64
#fast:38 #favo:30 #fini:165 #firm:37 #fore:-37 #free:-51 #frid:-40 #fter:-85 #game:28 #gara:-28 #gent:-47 #goin:49
#gone:-42 #good:-27 #grat:-43 #grea:-31 #gres:32 #gual:39 #guen:-26 #hace:58 #half:-114 #hang:25 #happ:-26 #harg:-32
#hast:-67 #heck:-25 #hens:57 #hese:-152 #hich:-38 #hile:35 #hing:93 #hole:35 #hora:-54 #houl:58 #hour:28 #hurs:-31
#ible:-30 #icio:33 #iday:-49 #ided:29 #idit:30 #iemp:105 #ierr:-61 #ight:112 #igua:43 #ilat:76 #iles:-25 #imes:-42
#inan:31 #inis:166 #inos:27 #irme:26 #ishe:81 #ismo:96 #isto:53 #ited:-32 #itin:-39 #jarl:80 #just:-33 #labo:-41
#lant:-32 #last:-100 #lata:76 #late:-115 #lcan:87 #lcul:33 #leav:39 #leva:67 #leve:28 #lida:55 #like:52 #list:62
#lkin:46 #llam:-28 #llan:-26 #llev:76 #lock:35 #long:186 #look:-30 #lose:38 #lrea:-38 #luga:-28 #make:33 #malo:-26
#mano:-26 #many:186 #medi:42 #ment:28 #mero:28 #meta:-25 #meti:-27 #mile:-27 #mina:46 #mism:84 #miss:27 #mora:48
#more:-26 #morn:28 #mpra:26 #much:71 #must:-56 #naro:62 #nder:-30 #near:27 #nece:-43 #need:106 #next:-36 #nfir:34
#nger:68 #nigh:113 #nina:28 #nino:25 #nish:164 #noon:62 #noug:62 #ntas:78 #ntes:62 #ntos:91 #ntra:47 #ntre:99
#nute:49 #nuto:-39 #nyth:-27 #nzan:25 #obra:-59 #ocup:38 #oger:78 #oing:36 #okin:-25 #oman:25 #onch:32 #onda:-26
#onfi:34 #onge:75 #only:-45 #oras:32 #ormi:29 #orni:28 #ossi:-28 #osta:-34 #ough:72 #ould:152 #ound:48 #ours:50
#over:91 #ovid:28 #paga:-31 #para:108 #pasa:-44 #pend:40 #pens:-31 #pero:54 #pick:67 #pidi:29 #pido:88 #plan:42
#poss:-26 #ppen:-28 #pper:26 #pres:-25 #prim:-27 #prov:28 #pued:-125 #push:-28 #qued:150 #quic:122 #quie:-39 #quit:25
#raba:41 #rada:55 #rame:79 #rant:-40 #rapi:123 #rati:-44 #rato:203 #rdad:111 #rdan:162 #rday:29 #read:47 #reak:53
#reat:-31 #reco:95 #rega:99 #regr:32 #rgen:-46 #rian:30 #rida:-50 #rive:-82 #rmin:48 #rnar:62 #rnig:111 #rnin:35
#rnoo:-72 #ront:28 #roun:57 #rran:-75 #rsda:-29 #ruck:-43 #rvic:71 #sabe:26 #sala:-53 #sale:37 #salg:112 #sali:43
#same:96 #satu:31 #sday:-49 #seri:-49 #serv:68 #shed:77 #shou:58 #show:25 #sibl:-30 #side:31 #sigu:-29 #soon:-30
#sper:59 #ssib:-25 #stan:-48 #star:141 #stay:27 #sted:-45 #stoy:-26 #sual:32 #swin:-32 #take:135 #talk:45 #tant:30
#tard:259 #tari:92 #tede:-26 #tene:29 #teng:40 #term:46 #tern:-73 #ther:-26 #thes:-152 #thin:96 #this:-44 #thur:-31
#tiem:123 #time:205 #toda:39 #toma:106 #took:-81 #trab:43 #trad:46 #treg:111 #truc:-46 #ttin:30 #turd:31 #turn:84
#uant:206 #uatr:27 #ucho:109 #ueda:64 #uede:-75 #uedo:31 #uest:-42 #ueve:-25 #ugar:-28 #uick:122 #uita:34 #unos:25
#uppe:26 #urda:31 #urge:-42 #urna:62 #ursd:-29 #uste:-44 #usua:36 #utos:-40 #vend:-25 #vern:111 #vice:36 #vici:36
#vide:25 #wait:-69 #what:-131 #when:105 #whic:-38 #whil:35 #whol:42 #will:148 #wing:-34 #wise:37 #work:-66 #woul:85
#your:-69 #ythi:-28 %again_later:30 %again_later%agree:101 %again_later%away:-28 %again_later%bring:-26
%again_later%busy:27 %again_later%do_it:-48 %again_later%elsewhere:-34 %again_later%gone_car:31
%again_later%how_long:-221 %again_later%money:247 %again_later%on_way:-49 %again_later%pay_day:-49
%again_later%question:92 %again_later%refuse:-49 %again_later%shift_it:-57 %again_later%who:-44 %agree:95
%agree%away:40 %agree%bad:-42 %agree%bring:83 %agree%call_off:90 %agree%do_it:130 %agree%doubt:-25 %agree%lift:36
%agree%money:41 %agree%on_way:28 %agree%opening:-27 %agree%place:90 %agree%question:-143 %agree%wrong_one:25 %away:84
%away%how_long:29 %away%question:-33 %bad:-70 %bad%meaning:-35 %bring:-31 %bring%call_off:36 %bring%do_it:-45
%bring%leave_me:-25 %bring%on_way:26 %bring%shift_it:38 %busy:111 %busy%call_off:29 %busy%how_long:32 %busy%money:55
%call_off:88 %call_off%doubt:29 %call_off%how_long:-44 %call_off%lift:54 %call_off%money:81 %call_off%on_way:46
%call_off%question:46 %call_off%refuse:-82 %call_off%shift_it:-28 %call_off%start_again:38 %car%how_long:31
%car%money:103 %car%question:129 %car_part:-31 %car_part%how_long:52 %car_part%leave_me:28 %car_part%place:-31
%car_part%question:-33 %car_part%wrong_one:30 %do_it%family:-32 %do_it%gone_car:79 %do_it%how_long:27 %do_it%lift:39
%do_it%question:48 %do_it%staff:82 %do_it%wrong_one:-52 %doubt:52 %doubt%how_long:40 %doubt%money:42 %doubt%refuse:30
%elsewhere:-39 %fails:-74 %fails%money:63 %fails%on_way:43 %fails%question:-38 %family:-32 %family%lift:29
%family%odometer:-25 %gone_car:-32 %gone_car%leave_me:48 %gone_car%lift:43 %gone_car%money:49 %gone_car%on_way:34
%gone_car%question:138 %gone_car%refuse:-51 %gone_car%staff:35 %gone_car%wrong_one:-30 %how_long:458
%how_long%leave_me:58 %how_long%lift:-38 %how_long%meaning:-30 %how_long%money:303 %how_long%odometer:50
%how_long%opening:-134 %how_long%place:-35 %how_long%question:367 %how_long%refuse:58 %how_long%season:-29
%how_long%shift_it:-103 %how_long%start_again:44 %how_long%thanks:-29 %how_long%who:-55 %leave_me:85 %lift:125
%lift%money:115 %lift%on_way:-27 %lift%opening:-35 %lift%question:158 %lift%refuse:-26 %lift%who:-42 %machine:-42
%meaning:-195 %meaning%question:-65 %message:-68 %message%question:-26 %money:-81 %money%odometer:79
%money%on_way:118 %money%pay_day:-64 %money%question:-28 %money%refuse:103 %money%shift_it:29 %noise:-25 %odometer:59
%odometer%question:41 %on_way%opening:25 %on_way%refuse:-41 %opening:-109 %opening%question:-52
%opening%start_again:27 %pay_day:-96 %pay_day%question:-50 %phone:32 %phone%question:51 %place:-27
%place%question:-82 %question:51 %question%refuse:27 %question%shift_it:61 %question%start_again:31
%question%who:-122 %question%wrong_one:-35 %season:-41 %shift_it:-25 %shift_it%start_again:-27 %smoke_smell:-39
%staff:33 %thanks:-61 %who:-125 %wrong_one:-66 @?:353 @after_visit:-178 @confirm_stop:-45 @nothing:40 @odometer:-62
@offers:28 @reading:-31 @walk_in:27 ^_a:-74 ^_am:62 ^_any:-37 ^_can:25 ^_cost:55 ^_cuantas:36 ^_cuantos:82
^_depende:40 ^_do:63 ^_does:26 ^_es:102 ^_eta:54 ^_half:-65 ^_hasta:-49 ^_hours:-88 ^_how:-90 ^_i:-95 ^_if:39
^_ill:-62 ^_im:-31 ^_in:41 ^_is:54 ^_it:-69 ^_la:67 ^_last:-50 ^_lo:43 ^_me:48 ^_no:-43 ^_noon:53 ^_not:-34 ^_ok:31
^_para:83 ^_precio:25 ^_sale:46 ^_salgo:32 ^_si:-61 ^_that:-68 ^_thursday:-25 ^_tienen:-32 ^_time:127 ^_va:36
^_wait:-47 ^_what:-50 ^_when:117 ^_why:-103 ^_will:93 ^_would:72 ^_ya:-42 ^_you:-61 a:113 a__a:49 a__alla:25
a__horas:-27 a__hour:26 a__job:46 a__off:28 a__or:56 a__para:28 a__thing:29 a__time:-31 a__y:39 a_day:-35 a_estar:68
a_la:-72 a_las:28 a_long:27 a_lunch:26 a_primera:-25 a_que:65 a_quick:51 a_tener:30 a_two:48 about:-29 abren:-78
abren_$:-51 afternoon:-70 afternoon_$:-34 ahi:58 ahi_$:61 ahi_sentado:27 al:-25 alcanza:28 alcanzo:37 alcanzo_a:42
all:139 all__thing:43 all_day:150 already:-38 am:156 am__going:27 am_i:137 an:157 an__day:90 an_all:96 and:163
and__i:27 and__it:33 and__long:43 and__many:38 and__much:-29 and_how:52 and_is:48 and_out:68 anda:-36 antes:70
antes__las:69 antes_de:78 any:-66 any__but:-27 any_day:-60 anything:-27 are__talking:55 are_we:49 are_your:-29 as:-67
at:100 at__i:32 at_would:41 back:57 back_$:27 back_an:-25 back_by:53 back_to:-26 bad:-35 be:112 be_$:-112 be__at:-40
be__by:79 be__day:30 be__it:35 be__the:29 be__there:27 be_done:118 be_finished:40 be_out:60 be_ready:96 be_stuck:27
been:-60 before:-60 before__have:25 before_it:-108 break:54 bring:25 but:-55 but__much:-26 by:291 by_$:113
by__time:52 by_noon:67 by_the:25 cafe:44 can__be:26 can__do:47 can__drive:-50 can__get:37 can__pick:65 can__wait:-55
can_i:-27 can_it:-35 can_you:90 cant:-27 cards:-26 cards_$:-26 carro_$:64 cierran:-67 cierran_$:-47 como__las:-32
como__se:32 como_cuanto:120 cosa:48 cosa_de:46 cost:54 cost_$:-41 cost_and:35 costo_y:30 could_you:41 cual:-28
cuando_lo:118 cuando_me:-29 cuantas:83 cuantas__son:32 cuantas_horas:69 cuanto:48 cuanto_$:-62 cuanto__a:-27
cuanto__el:-28 cuanto__eso:26 cuanto__lleva:49 cuanto__me:49 cuanto__que:-28 cuanto__queda:-40 cuanto__sale:-32
cuanto__tardan:37 cuanto__tengo:69 cuanto__y:51 cuanto_cuesta:-33 cuanto_dura:69 cuanto_es:-110 cuanto_me:34
cuanto_por:-53 cuanto_rato:110 cuanto_sale:-39 cuanto_se:165 cuanto_seria:-63 cuanto_tiempo:42 cuanto_toma:31
cuanto_va:-32 cuantos:92 cuantos_dias:96 cuatro:27 cuesta:-43 cuesta_$:-57 da:39 da__de:33 da_tiempo:26 dan:47
dan_el:41 day:-80 day_after:-33 day_but:-31 day_i:-31 day_job:46 day_thing:52 days:-44 days_$:-25 de:139 de__dia:42
de__el:30 de__hora:46 de__por:49 de_espera:-50 de_las:73 de_todo:32 de_un:41 de_una:34 deal:29 deal_$:35 deja:-43
dejar:36 dejarlo:68 dejo:50 dejo_en:37 del:-33 demora:39 depende:40 dia:198 dia_$:134 dia_o:60 dias:112 dilatan:67
do:57 do_$:-29 do__charge:-27 do__have:-26 do__need:109 do__take:-35 do_i:26 do_you:58 does:145 does__take:84
does_it:85 does_that:58 done:109 done__the:35 done_by:87 done_in:31 drive:-75 drop:31 drop_off:29 dura:63 eat:37
el:-31 el_$:30 el__a:-39 el__de:-31 el__dia:165 el_dia:39 el_mismo:131 el_servicio:36 el_trabajo:35 el_viernes:-39
en:61 en__manana:34 en__me:-43 en__que:57 en__rato:62 en__se:-30 en_cuanto:-143 en_lo:57 en_mi:41 en_un:60 enero:25
enero_$:31 enough:62 enough_$:40 entrada:59 entregan:116 entregan_$:69 entregan__mismo:36 entro:28 era:-35 es:95
es_$:-69 es__de:51 es__el:32 es__entrada:44 es__mismo:-25 es__o:36 es__que:-33 es_cosa:47 es_de:157 es_el:-40
es_eso:-39 es_gratis:-40 es_la:-38 es_lo:-59 es_que:42 es_rapidito:34 es_rapido:44 es_tardado:109 esas:-29
ese_dia:-36 eso_se:27 espera:-49 espera_$:-40 esperar:32 esperar_$:31 espero:76 espero_$:43 esta_$:25 estan:-46
estar:84 estaria:117 estaria_$:45 estoy:-26 eta:54 falta:62 falta_$:58 fast:44 favor:30 finish:86 finished:81
finished_$:41 for:133 for_$:42 for_a:26 free:-43 free_$:-37 friday:-42 game:33 get:48 get__back:100 get__done:-38
get_back:-28 get_it:78 go:-79 go_on:-53 going:49 going__be:48 going__take:25 going_to:60 gone:-42 gone_$:-39 good:-27
got:27 got_a:49 gratis:-42 gratis_$:-38 great:-30 guys_have:42 hace:35 hacer:-27 hacerlo:40 hacerlo_$:29 half:-114
half__hour:-29 half_an:-29 happens:-27 happens__i:-26 happens_if:-26 hasta:-67 hasta__hora:-57 hasta_que:-59
have__a:25 have__back:51 have__been:-25 have_a:-44 have_it:149 have_you:-40 hay_que:36 hora:-76 hora__lo:40
hora_abren:-66 hora_cierran:-54 hora_de:-28 hora_estan:-32 hora_me:37 hora_que:-61 horas:33 horas_son:26 hours:42
hours_$:-49 hours__it:31 hours_is:62 how:185 how__and:36 how__can:-77 how__days:31 how__does:47 how__for:30
how__hours:180 how__i:-29 how__is:-69 how__longer:54 how__of:64 how__time:116 how__would:-51 how_about:-39 how_do:-37
how_long:113 how_many:188 hoy:53 hoy_mismo:46 i:137 i__an:26 i__at:75 i__by:32 i__for:41 i__it:179 i__my:51 i__off:33
i__on:-106 i__out:38 i__that:-34 i__there:27 i_be:104 i_came:29 i_drive:-51 i_get:96 i_go:-66 i_going:27 i_have:33
i_make:58 i_miss:39 i_need:-42 i_pick:54 i_plan:38 i_will:-48 if:48 if_i:28 igual:40 ill:-69 in:64 in__an:25
in__out:68 in_and:79 is:147 is__a:102 is__an:90 is__car:-26 is__enough:29 is__free:-32 is__going:35 is__in:25
is__like:47 is__turnaround:54 is__urgent:-28 is__wait:86 is_it:128 is_my:-38 is_that:115 is_the:115 it:129 it_$:-126
it__a:36 it__all:47 it__and:48 it__by:119 it__done:76 it__finished:40 it__it:-38 it__long:36 it__quick:49
it__ready:81 it__same:40 it__when:-29 it_a:77 it_an:29 it_back:104 it_be:80 it_cost:-35 it_done:39 it_for:27
it_going:25 it_in:38 it_is:-107 it_like:45 it_off:-29 it_out:35 it_overnight:53 it_take:128 it_to:-31 it_up:42
it_urgent:-28 it_wait:-41 it_when:-29 job:136 job_$:75 just:-28 k_$:-28 la:41 la__de:-62 la__que:-54 la_hora:-107
la_manana:48 labor:-41 labor_$:-25 las:70 las_$:46 last:-103 last_time:-76 late:-75 later:-35 le:-71 leave:40 les:-52
lets_get:-27 like:52 like_a:38 listo:53 listo_$:30 lleva:68 lleva_$:34 lo:258 lo__ahi:26 lo__el:57 lo__en:54
lo__le:-25 lo_dan:61 lo_dejo:52 lo_entregan:104 lo_hacen:33 lo_mismo:-30 lo_puedo:50 lo_recojo:31 lo_tengo:37
lo_tienen:101 lonche:25 long:89 long_$:79 long__i:-89 long__it:-55 long_and:29 long_do:35 long_does:55 long_for:39
long_is:31 long_will:43 longer:76 longer_$:53 lugar:-28 make:35 make__to:-29 malo:-26 many:186 many__is:57
many_days:31 many_hours:183 many_times:-27 mas:-35 mas_tarde:-39 me_$:-33 me__dan:64 me__el:-32 me__entregan:68
me__que:33 me__tiempo:26 me__un:31 me_back:-28 me_da:40 me_espero:53 me_lo:140 me_va:-26 me_voy:27 mero:39 mi:29
mi__de:34 mi_break:32 miles:-25 min:39 minute:33 minutos:-40 minutos_tarde:-26 mismo:98 mismo_$:27 mismo_dia:161
miss:28 monday:-32 monday_$:-29 morning:33 move:-25 much:-31 much_$:-66 much__i:-40 much__it:-132 much__my:66
much__the:-27 much_is:-59 much_longer:54 much_of:66 much_time:116 much_will:-57 much_would:-78 mucho:106 mucho_$:51
must:-56 my:97 my__is:33 my_morning:31 n:26 need:95 need_$:66 need__for:31 need_that:-35 need_to:47 next:-36 nina:28
ninos:28 no:-112 no_$:30 no_tengo:-25 noon:134 noon_$:59 not:-43 o:299 o_de:35 o_hay:27 o_mas:50 o_no:40 o_que:31
o_se:27 of:59 of__morning:35 of_my:75 off_at:35 ok:-57 ok_$:-74 on:-151 on__it:38 one:89 only:-45 or:264 or__a:27
or__i:32 or__it:50 or_a:44 or_is:31 or_what:30 out:159 out_$:43 out_by:105 overnight:111 overnight_$:83 para:113
para__lo:76 para_cuando:68 para_el:-28 para_la:46 para_las:41 pasa:-26 pick:71 pick__up:65 pick_it:65 plan:39 pm:31
por:34 por_favor:30 por_mi:27 precio_y:46 primera_hora:-25 pueda:-38 pueda_$:-35 puedan:-40 puede:-59 puede_$:-30
puedo:28 puedo__hoy:50 push:-27 push_it:-26 que__abren:-71 que__cierran:-65 que__eso:-42 que__estan:-37 que__me:50
que__sale:37 que__se:31 que_dejar:45 que_es:-67 que_esperar:40 que_hora:72 que_horas:-26 que_le:-37 que_lo:-27
que_tan:42 que_tanto:36 queda:118 queda_$:99 queda_el:30 quedar:25 quick:112 quick_$:28 quick__or:44 quien:-27
rapidito:31 rapido:90 rapido_$:50 rato:211 rato_$:31 rato_me:57 ready:90 recoger:80 recojo:39 saber:33 saber_si:28
sala:-53 sala_de:-51 sale:40 sale_$:-36 sale_el:51 salgo:119 salgo__las:25 salgo_antes:58 salida:63 same:98
same_day:155 same_time:-33 saturday:34 saturday_$:27 say:-35 se:216 se__a:30 se__con:34 se__el:30 se__en:46
se_hace:60 se_lleva:64 se_lo:-56 se_pueda:-35 se_puede:-39 se_queda:64 se_tarda:26 se_tardan:81 sentado:26 ser:-30
seria:-52 service:37 servicio:36 should:61 should__plan:38 should_i:68 si__cuanto:-27 si__de:28 si__llevo:28 si_es:41
si_lo:46 si_voy:39 si_y:-30 siguen:-27 sin:44 sin_carro:44 son_$:27 stay:27 stop:-25 stop_$:-31 stuck_there:27
supper:26 swing:-32 swing_by:-30 take:146 take_$:57 take__day:37 take_long:26 talking:50 talking_$:43 tan:40
tan__es:25 tanto:34 tanto_se:27 tarda:48 tarda_$:30 tardado:111 tardan:142 tardan_$:35 tardan_mucho:44 tarde:-54
tarde_$:-35 tener:30 tengo:68 tengo__dejar:45 tengo_que:104 th:-27 than:28 that_$:28 that__all:33 that__be:-31
that__is:-39 that_a:35 that_day:-84 that_take:31 that_truck:-38 that_would:-29 the:50 the__and:39 the__at:48
the__day:51 the_day:-30 the_game:33 the_same:35 the_time:37 the_turnaround:54 the_wait:83 there_$:-57 these:-152
these_$:-113 these_days:-42 thing:113 thing_$:82 thing_or:35 this:-44 this_time:-27 thursday:-27 tie:30 tiempo:119
tienen_$:39 tienen__de:-34 time:266 time__i:35 time__it:47 time__you:59 time_do:67 time_to:35 times:-30 to__all:38
to_be:44 to_know:31 to_leave:27 to_say:-27 to_take:32 to_the:-36 toda:33 toda_la:35 todo__dia:46 todo_el:40 toma:88
too:-25 took:-81 took_it:-29 trabajo:32 truck:-39 truck_is:-38 turnaround:62 two:58 two_$:28 un:117 un__ya:28
un_dia:38 un_rato:76 una:61 una_hora:73 unos:25 up:45 up_$:61 urgent:-31 urgent_$:-28 ustedes:-26 van:26
van__tener:32 vez:35 voy:55 voy_a:26 waited:-32 waiting:-38 was:-59 we_talking:55 week:-29 what:-124 what__if:-26
what__it:-78 what__that:-25 what__the:111 what__would:27 what__you:-25 what__your:-34 what_happens:-26 what_is:41
what_would:-59 when:54 when__get:-43 when__i:185 when__it:67 when_i:-142 when_would:84 whens:57 which:-36 who:-76
whole:42 why:-118 why_$:-40 why__i:-40 why_would:-28 will:149 will__be:67 will__have:33 will__it:-36 will__make:31
will__need:38 will__take:41 will_do:-36 will_i:139 will_that:30 will_you:79 work:-44 work_$:-31 would:96
would__be:125 would__get:65 would__have:59 would_be:-42 would_i:159 would_it:74 would_the:-32 would_you:25 y:104
y__por:34 y__que:51 y_a:50 y_como:42 y_cuanto:40 y_para:41 y_tiempo:56 ya__lo:-28 ya_esta:27 ya_lo:-26 ya_mero:29
yes:-55 yes_$:-26 yes_and:-32 yes_i:-27 yo:-64 you_$:-45 you__a:-44 you__have:36 you__it:182 you_charge:-27 you_do:67
you_guys:26 you_need:129 you_take:-39 your:-68 your_hours:-27
"""
