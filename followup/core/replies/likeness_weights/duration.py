"""What speaks for and against `duration`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "duration"
BIAS = -201
WEIGHTS = """\
#abaj:35 #aber:26 #abor:-39 #abre:-56 #afte:-59 #agar:-32 #ahor:-23 #ails:-72 #aite:-31 #aiti:-33 #alca:74 #alcu:29
#algo:92 #alid:48 #alki:42 #alre:-29 #alta:55 #amos:-27 #ance:-24 #anda:-49 #ando:-54 #anta:33 #ante:47 #anto:139
#anyt:-23 #anza:53 #anzo:31 #apid:101 #appe:-28 #arda:256 #arde:-52 #ards:-26 #arge:-23 #aria:155 #ario:-24 #arlo:54
#aron:-101 #arou:57 #asta:-49 #atan:56 #ater:-47 #atis:-38 #atro:22 #atur:28 #avor:27 #back:32 #bajo:23 #been:-50
#befo:-53 #bout:-39 #bran:-22 #brea:45 #bren:-56 #brin:22 #buen:-26 #cafe:38 #calc:29 #camb:-29 #cant:-27 #canz:76
#card:-26 #cerl:27 #cesi:-24 #char:-26 #cier:-53 #cion:-23 #cloc:24 #clos:29 #cobr:-25 #coge:86 #cojo:37 #conf:30
#cont:-23 #cosa:36 #cost:37 #cual:-36 #cuan:156 #cuat:24 #cues:-30 #cupa:23 #dado:93 #dara:29 #dari:53 #daro:-49
#days:-28 #deja:63 #dejo:43 #demo:42 #depe:36 #deti:25 #dias:103 #dila:65 #dito:25 #does:117 #done:81 #dorm:26
#driv:-77 #dura:49 #each:-22 #eady:53 #eave:37 #eces:-25 #ecog:69 #ecoj:35 #edan:-44 #edar:53 #edes:-23 #edio:31
#efor:-53 #egan:94 #egre:26 #ejar:99 #ello:-22 #emor:34 #empo:96 #endi:-22 #enen:28 #ener:50 #enga:-25 #engo:57
#enou:54 #ente:-27 #entr:140 #epen:36 #erar:28 #eria:-55 #erlo:35 #ermi:43 #erni:98 #erno:-53 #erra:-53 #ervi:71
#esan:25 #esas:-27 #esit:-24 #espe:53 #esta:107 #esto:-45 #evar:-27 #ever:-28 #fail:-82 #falt:56 #fast:36 #favo:27
#fini:150 #firm:35 #fore:-34 #free:-46 #frid:-36 #fter:-59 #game:24 #gara:-25 #gent:-42 #gles:-23 #goin:39 #gone:-40
#good:-26 #grat:-38 #grea:-23 #gres:26 #gual:33 #guen:-27 #guys:25 #hace:46 #half:-96 #happ:-24 #harg:-26 #hast:-59
#hens:49 #hese:-133 #hich:-33 #hile:27 #hing:79 #hole:29 #hora:-35 #houl:47 #hump:-23 #ible:-29 #icio:30 #iday:-44
#ided:25 #idit:27 #iemp:82 #ierr:-43 #ight:98 #igua:36 #igue:-30 #ilat:65 #iles:-23 #imes:-41 #inan:27 #inis:151
#inos:23 #irme:24 #ishe:72 #ismo:68 #isto:47 #ited:-31 #itin:-34 #jarl:71 #just:-28 #labo:-39 #lant:-26 #last:-92
#lata:66 #late:-100 #lcan:74 #lcul:29 #leav:37 #leva:55 #leve:26 #lida:47 #like:43 #list:57 #lkin:42 #llam:-24
#llev:59 #lock:31 #long:134 #look:-27 #lose:34 #lrea:-29 #lube:-25 #luga:-28 #make:29 #malo:-24 #mana:-23 #mano:-23
#many:172 #medi:38 #ment:23 #mero:25 #meta:-22 #meti:-26 #mile:-25 #mina:39 #mism:55 #miss:25 #mora:43 #morn:27
#mpra:23 #much:72 #must:-44 #naro:58 #nder:-32 #near:25 #nece:-40 #need:92 #next:-23 #nfir:32 #nger:57 #nigh:93
#nina:25 #nish:149 #noon:63 #noug:54 #ntad:22 #ntas:64 #ntes:58 #ntos:84 #ntra:44 #ntre:80 #nute:44 #nuto:-36
#obra:-46 #ocup:37 #oger:70 #oing:26 #okin:-22 #onch:29 #onfi:31 #onge:62 #only:-34 #ormi:26 #orni:27 #ossi:-28
#osta:-30 #ough:60 #ould:106 #ound:44 #ours:47 #over:84 #ovid:24 #paga:-28 #para:89 #pasa:-37 #pend:35 #pens:-29
#pero:47 #pick:60 #pidi:26 #pido:73 #plac:-24 #plan:37 #poss:-26 #ppen:-26 #pper:24 #pres:-22 #prim:-22 #prov:24
#pued:-129 #push:-25 #qued:145 #quic:94 #quie:-30 #quit:24 #raba:34 #rada:48 #rame:74 #rant:-35 #rapi:104 #rati:-39
#rato:187 #rdad:99 #rdan:123 #rday:27 #read:48 #reak:45 #reat:-23 #reco:87 #rega:78 #regr:26 #rgen:-41 #rian:26
#rida:-45 #rive:-77 #rmin:42 #rnar:58 #rnig:98 #rnin:33 #rnoo:-52 #ront:23 #roun:52 #rran:-55 #ruck:-42 #rvic:61
#sala:-47 #sale:37 #salg:101 #sali:39 #same:92 #satu:28 #sday:-35 #seri:-40 #serv:58 #shed:69 #shou:47 #show:22
#sibl:-30 #side:28 #sigu:-35 #soon:-26 #sper:60 #ssib:-25 #stan:-46 #star:127 #stay:24 #sted:-40 #stoy:-24 #sual:27
#swin:-27 #take:107 #talk:41 #tant:24 #tard:205 #tari:83 #tede:-23 #tene:28 #teng:33 #term:41 #tern:-53 #thes:-133
#they:23 #thin:82 #this:-41 #tiem:100 #time:194 #toda:37 #toma:88 #took:-70 #trab:36 #trad:43 #treg:90 #truc:-44
#ttin:29 #turd:28 #turn:79 #uant:169 #uatr:24 #ucho:86 #ueda:65 #uede:-75 #uest:-29 #ueve:-22 #ugar:-28 #uick:94
#uita:31 #unde:-22 #upan:25 #uppe:24 #urda:28 #urge:-39 #urna:58 #uste:-40 #usua:30 #utos:-37 #vern:98 #vice:30
#vici:31 #wait:-48 #what:-102 #when:89 #whic:-33 #whil:27 #whol:35 #will:114 #wing:-30 #wise:32 #work:-63 #woul:47
#your:-51 %again_later:29 %again_later%agree:95 %again_later%away:-27 %again_later%bring:-28 %again_later%busy:23
%again_later%call_off:-26 %again_later%car_part:-22 %again_later%do_it:-50 %again_later%elsewhere:-28
%again_later%gone_car:28 %again_later%how_long:-181 %again_later%lift:33 %again_later%money:223
%again_later%on_way:-48 %again_later%pay_day:-41 %again_later%phone:-22 %again_later%question:67
%again_later%refuse:-48 %again_later%shift_it:-52 %again_later%who:-46 %agree:73 %agree%away:37 %agree%bad:-40
%agree%bring:67 %agree%call_off:77 %agree%do_it:105 %agree%doubt:-22 %agree%how_long:29 %agree%lift:38
%agree%money:30 %agree%on_way:28 %agree%opening:-22 %agree%place:88 %agree%question:-135 %agree%wrong_one:24 %away:69
%away%how_long:27 %away%question:-33 %away%start_again:-22 %bad:-52 %bad%meaning:-22 %bring:-41 %bring%call_off:26
%bring%do_it:-43 %bring%shift_it:35 %busy:97 %busy%call_off:24 %busy%how_long:33 %busy%money:47 %call_off:46
%call_off%doubt:24 %call_off%how_long:-51 %call_off%lift:49 %call_off%money:68 %call_off%on_way:35
%call_off%question:26 %call_off%refuse:-81 %call_off%shift_it:-27 %car%how_long:23 %car%lift:-26 %car%money:91
%car%question:108 %car_part%how_long:51 %car_part%leave_me:24 %car_part%place:-27 %car_part%question:-24
%car_part%wrong_one:27 %do_it%elsewhere:-26 %do_it%family:-30 %do_it%gone_car:57 %do_it%how_long:23 %do_it%lift:33
%do_it%question:40 %do_it%staff:71 %do_it%wrong_one:-45 %doubt:41 %doubt%how_long:34 %doubt%money:34 %doubt%refuse:25
%elsewhere:-34 %fails:-61 %fails%money:59 %fails%on_way:39 %fails%question:-29 %family:-28 %family%lift:26
%family%odometer:-24 %gone_car:-40 %gone_car%leave_me:45 %gone_car%lift:40 %gone_car%money:44 %gone_car%on_way:29
%gone_car%question:125 %gone_car%refuse:-52 %gone_car%staff:33 %gone_car%wrong_one:-29 %how_long:423
%how_long%leave_me:53 %how_long%lift:-22 %how_long%meaning:-26 %how_long%money:264 %how_long%odometer:41
%how_long%opening:-83 %how_long%place:-38 %how_long%question:303 %how_long%refuse:52 %how_long%season:-25
%how_long%shift_it:-87 %how_long%start_again:31 %how_long%thanks:-25 %how_long%who:-54 %leave_me:81 %lift:127
%lift%money:107 %lift%opening:-32 %lift%question:136 %lift%refuse:-25 %lift%who:-45 %machine:-36 %meaning:-158
%meaning%question:-48 %message:-52 %message%question:-22 %money:-45 %money%odometer:69 %money%on_way:105
%money%pay_day:-53 %money%place:22 %money%question:-27 %money%refuse:87 %money%shift_it:27 %noise:-25 %odometer:49
%odometer%question:35 %on_way%opening:22 %on_way%refuse:-42 %opening:-56 %opening%refuse:23 %opening%start_again:23
%pay_day:-77 %pay_day%question:-44 %phone:27 %phone%question:47 %place%question:-72 %question:47
%question%shift_it:48 %question%start_again:22 %question%who:-105 %question%wrong_one:-33 %refuse:-25 %season:-35
%shift_it%start_again:-27 %smoke_smell:-38 %staff:31 %thanks:-53 %who:-106 %wrong_one:-55 @?:214 @after_visit:-140
@car:-23 @confirm:32 @confirm_stop:-43 @odometer:-55 @offers:35 @reading:-27 ^_a:-51 ^_am:55 ^_can:25 ^_cost:49
^_cuantas:33 ^_cuantos:75 ^_depende:35 ^_do:62 ^_es:76 ^_eta:45 ^_half:-56 ^_hasta:-42 ^_hours:-77 ^_how:-56 ^_i:-91
^_if:35 ^_ill:-55 ^_im:-27 ^_in:33 ^_is:40 ^_it:-58 ^_la:54 ^_last:-46 ^_lo:35 ^_me:34 ^_no:-40 ^_noon:47 ^_not:-26
^_ok:22 ^_para:71 ^_precio:25 ^_sale:44 ^_salgo:29 ^_si:-52 ^_that:-63 ^_tienen:-24 ^_time:113 ^_va:31 ^_wait:-44
^_what:-31 ^_when:106 ^_why:-97 ^_will:68 ^_would:48 ^_ya:-34 ^_yep:22 ^_you:-45 a:98 a__a:42 a__alla:22 a__horas:-24
a__hour:22 a__job:38 a__off:24 a__or:51 a__para:24 a__thing:23 a__time:-26 a__y:37 a_day:-26 a_estar:61 a_la:-73
a_long:23 a_lunch:23 a_que:77 a_tener:29 a_two:43 abren:-56 abren_$:-41 afternoon:-51 afternoon_$:-25 ahi:52 ahi_$:56
ahi_sentado:25 al:-26 alcanza:23 alcanzo:31 alcanzo_a:36 all:120 all_day:133 already:-29 am:141 am__going:25 am__i:22
am_i:122 an:137 an__day:78 an_all:84 and:146 and__i:24 and__it:30 and__long:35 and__many:37 and__much:-26 and_how:46
and_is:43 and_out:58 anda:-33 antes:65 antes__las:64 antes_de:74 any:-41 any_day:-37 are__talking:46 are_we:41 as:-58
at:89 at__i:28 at_would:37 back:38 back_$:22 back__hour:-24 back_an:-25 back_by:48 back_to:-23 bad:-23 be:75
be_$:-110 be__at:-37 be__by:65 be__day:31 be__it:29 be__the:25 be__there:24 be_done:106 be_finished:37 be_out:48
be_ready:80 be_stuck:23 been:-50 before:-53 before__have:22 before_it:-93 bout:-32 break:46 bring:22 but:-29
but__much:-23 by:261 by_$:101 by__time:49 by_noon:54 by_the:27 cafe:38 can__be:23 can__do:38 can__drive:-49
can__get:32 can__pick:59 can__wait:-38 can_it:-26 can_you:72 cant:-23 cards:-26 cards_$:-26 carro_$:56 cierran:-48
cierran_$:-33 como__las:-29 como__se:27 como_cuanto:110 cosa:38 cosa_de:36 cost:50 cost_$:-37 cost_and:30 costo_y:27
could_you:39 cual:-25 cuando_lo:110 cuando_me:-28 cuantas:68 cuantas__son:24 cuantas_horas:56 cuanto:27 cuanto_$:-55
cuanto__a:-22 cuanto__el:-26 cuanto__eso:22 cuanto__lleva:44 cuanto__me:38 cuanto__que:-27 cuanto__queda:-35
cuanto__sale:-30 cuanto__tardan:28 cuanto__tengo:64 cuanto__y:46 cuanto_anda:-23 cuanto_cuesta:-23 cuanto_demora:22
cuanto_dura:64 cuanto_es:-97 cuanto_me:38 cuanto_por:-47 cuanto_rato:99 cuanto_sale:-34 cuanto_se:137
cuanto_seria:-56 cuanto_tiempo:28 cuanto_toma:26 cuanto_va:-28 cuantos:84 cuantos_dias:89 cuatro:24 cuesta:-30
cuesta_$:-42 da:35 da__de:29 da_tiempo:25 dan:40 dan_el:35 day:-42 day_after:-27 day_i:-26 day_job:46 day_thing:39
days:-25 de:119 de__dia:38 de__hora:42 de__por:43 de_espera:-44 de_las:66 de_todo:22 de_un:31 de_una:31 deal:27
deal_$:32 deja:-37 dejar:34 dejarlo:60 dejo:43 dejo_en:33 del:-30 demora:34 depende:34 dia:163 dia_$:112 dia_o:48
dias:103 dilatan:57 do:53 do_$:-25 do__charge:-22 do__have:-24 do__need:98 do__take:-35 do_you:57 does:120
does__take:71 does_it:69 does_that:50 done:81 done__the:33 done_by:80 done_in:28 drive:-71 drop:25 drop_off:26
dura:60 el:-54 el_$:25 el__a:-33 el__de:-28 el__dia:137 el__y:-23 el_dia:33 el_jueves:-22 el_mismo:103 el_servicio:32
el_trabajo:29 el_viernes:-41 en:33 en__manana:30 en__me:-37 en__mismo:-24 en__que:49 en__rato:60 en__se:-27
en_cuanto:-133 en_lo:50 en_mi:35 en_un:59 end:-22 enero_$:27 enough:54 enough_$:35 entrada:53 entregan:95
entregan_$:62 entro:24 era:-31 es:71 es_$:-56 es__de:42 es__el:28 es__entrada:38 es__mismo:-26 es__o:32 es__que:-32
es_cosa:36 es_de:140 es_el:-37 es_eso:-38 es_gratis:-35 es_la:-33 es_lo:-54 es_malo:-22 es_que:37 es_rapidito:31
es_rapido:31 es_tardado:97 esas:-26 ese_dia:-34 eso_se:22 espera:-44 espera_$:-35 esperar:29 esperar_$:29 espero:73
espero_$:39 estan:-44 estar:76 estaria:106 estaria_$:41 estoy:-24 eta:45 falta:54 falta_$:50 fast:41 favor:27
favor_$:23 finish:79 finished:72 finished_$:36 for:121 for_$:34 for_a:22 for_the:25 free:-39 free_$:-35 friday:-38
game:29 get:35 get__at:23 get__back:89 get__done:-36 get_back:-29 get_it:68 go:-74 go_on:-51 going:39 going__be:47
going__take:23 going_to:49 gone:-40 gone_$:-38 good:-26 got:29 got_a:42 gratis:-38 gratis_$:-34 great:-23 guys:25
guys_have:40 hace:33 hacer:-25 hacerlo:30 had:-22 half:-96 half__hour:-22 half_an:-22 happens:-26 happens__i:-25
happens_if:-25 hasta:-59 hasta__hora:-49 hasta_que:-52 have__back:44 have__been:-22 have_a:-37 have_it:133
have_you:-34 hay_que:32 hora:-46 hora__lo:33 hora_abren:-46 hora_cierran:-37 hora_de:-24 hora_estan:-32 hora_me:31
hora_que:-59 horas:22 hour_$:-22 hours:39 hours_$:-45 hours__it:24 hours_is:53 how:174 how__and:30 how__can:-75
how__days:27 how__does:39 how__for:29 how__hours:167 how__i:-27 how__is:-46 how__longer:46 how__of:47 how__time:104
how__will:-27 how__would:-51 how_bout:-31 how_do:-32 how_long:79 how_many:174 hoy:40 hoy_mismo:39 i:97 i__an:22
i__at:66 i__by:28 i__for:35 i__it:149 i__like:-22 i__my:48 i__off:32 i__on:-98 i__out:29 i__that:-33 i_be:86
i_came:25 i_drive:-50 i_get:83 i_go:-63 i_going:25 i_have:26 i_make:51 i_miss:34 i_need:-42 i_pick:50 i_plan:32
i_will:-41 if:41 if_i:22 igual:33 ill:-56 in:50 in__out:58 in_and:68 is:147 is__a:86 is__an:79 is__car:-26
is__enough:26 is__free:-31 is__going:28 is__in:23 is__like:44 is__turnaround:51 is__urgent:-28 is__wait:76 is_it:121
is_my:-33 is_that:111 is_the:108 it:89 it_$:-91 it__a:32 it__all:38 it__and:40 it__by:110 it__done:70 it__finished:37
it__it:-37 it__k:-23 it__long:31 it__quick:38 it__ready:65 it__same:33 it__under:-24 it__when:-27 it_a:69 it_back:86
it_be:64 it_cost:-27 it_done:32 it_going:24 it_in:26 it_is:-103 it_like:42 it_off:-29 it_out:31 it_overnight:46
it_take:108 it_to:-32 it_up:39 it_urgent:-28 it_wait:-31 it_when:-27 job:124 job_$:69 just:-25 k_$:-26 know_how:22
la__de:-53 la__que:-53 la_hora:-96 la_manana:43 labor:-39 labor_$:-24 las:58 las_$:34 last:-95 last_time:-69 late:-64
later:-32 le:-68 le__a:-22 leave:38 leave_it:22 les:-45 lets_get:-25 like:43 like_a:33 listo:47 listo_$:27 lleva:60
lleva_$:31 lo:207 lo__ahi:24 lo__asi:-22 lo__el:40 lo__en:46 lo__le:-23 lo_dan:53 lo_dejo:45 lo_entregan:84
lo_hacen:28 lo_mismo:-29 lo_ocupan:25 lo_puedo:43 lo_recojo:31 lo_tengo:35 lo_tienen:85 long:59 long_$:73 long__i:-89
long__it:-53 long_and:26 long_do:30 long_does:46 long_for:33 long_is:27 long_will:34 longer:63 longer_$:45 lube:-25
lugar:-28 make:31 make__to:-27 malo:-24 manana_a:-22 mano:-22 many:172 many__is:47 many_days:27 many_hours:170
many_times:-24 mas:-37 mas_tarde:-36 me_$:-29 me__dan:56 me__el:-27 me__entregan:47 me__que:31 me__tiempo:25
me__un:27 me_back:-24 me_da:36 me_espero:53 me_lo:111 me_voy:23 mero:33 mi:23 mi__de:30 mi_break:28 miles:-22 min:35
minute:32 minutos:-37 minutos_tarde:-24 mismo:69 mismo_$:25 mismo_dia:134 miss:26 monday:-26 morning:30 move:-22
much_$:-41 much__i:-35 much__it:-116 much__my:49 much__the:-24 much_is:-44 much_longer:46 much_time:104 much_will:-55
much_would:-74 mucho:83 mucho_$:41 must:-44 my:86 my__back:22 my_morning:26 n:25 need:85 need_$:60 need__for:28
need_that:-32 need_to:43 next:-23 nina:25 ninos:24 ninos_a:22 no:-107 no_$:27 no__tiempo:-22 no_tengo:-26 noon:115
noon_$:49 not:-34 o:264 o_hay:24 o_mas:44 o_no:35 o_que:29 o_se:25 ocupan:25 ocupan_$:25 of:48 of__morning:30
of_my:57 off_at:33 ok:-55 ok_$:-66 on:-132 on__it:32 one:80 only:-34 or:233 or__a:22 or__i:26 or__it:43 or_a:37
or_is:27 or_what:29 out:136 out_$:39 out_by:90 overnight:98 overnight_$:71 para:94 para__lo:68 para_cuando:64
para_el:-30 para_la:39 para_las:36 pasa:-23 pero:-26 pick:65 pick__up:59 pick_it:60 plan:33 pm:25 por:34 por_favor:28
por_mi:24 possible:-23 precio_y:41 pueda:-36 pueda_$:-33 puedan:-38 puede:-61 puede_$:-34 puedo__hoy:44 push:-25
push__back:-23 push_it:-24 que__abren:-49 que__cierran:-47 que__eso:-40 que__estan:-36 que__me:44 que__sale:33
que__se:25 que_dejar:42 que_es:-66 que_esperar:39 que_hora:86 que_le:-35 que_lo:-23 que_tan:38 que_tanto:30 queda:114
queda_$:99 quedar:22 quick:85 quick_$:23 quick__or:34 quick_lube:-25 rapidito:28 rapido:75 rapido_$:39 rato:193
rato_$:27 rato_me:49 ready:82 recoger:71 recojo:37 saber:26 saber_si:24 sala:-47 sala_de:-45 sale:40 sale_$:-31
sale_el:48 salgo:107 salgo_antes:51 salida:55 same:94 same_day:137 same_time:-26 saturday:30 saturday_$:23 say:-31
se:172 se__a:27 se__con:29 se__el:24 se__en:41 se_hace:55 se_lleva:57 se_lo:-49 se_pueda:-33 se_puede:-43 se_queda:61
se_tardan:63 sentado:25 ser:-26 seria:-46 service:31 servicio:31 should:49 should__plan:32 should_i:58 si__cuanto:-24
si__de:24 si__dejo:22 si__llevo:23 si_es:35 si_lo:39 si_voy:34 si_y:-27 siguen:-28 siguen__el:-22 siguen_en:-23
sin:41 sin_carro:38 soon:-22 stay:24 stop_$:-27 stuck_there:23 supper:24 swing:-27 swing_by:-26 take:117 take_$:48
take__day:31 take_long:23 talking:41 talking_$:36 tan:36 tan__es:24 tanto:28 tarda:40 tarda_$:23 tardado:98
tardan:106 tardan_$:25 tardan_mucho:29 tarde:-54 tarde_$:-31 tener:29 tengo:58 tengo__dejar:42 tengo_que:96
tengo_tiempo:-25 th:-23 than:22 that__all:33 that__be:-30 that__is:-37 that_a:29 that_day:-77 that_take:26
that_would:-28 the:68 the__and:36 the__at:44 the__day:47 the_car:22 the_day:-22 the_game:29 the_same:33 the_time:35
the_turnaround:51 the_wait:74 there_$:-54 there_a:-22 there_all:26 these:-133 these_$:-108 these_days:-28 they:24
thing:96 thing_$:74 thing_or:26 this:-41 tiempo:97 tienen_$:32 tienen__de:-30 time:251 time_$:24 time__i:31
time__it:44 time__you:54 time_do:60 time_to:31 times:-27 to__all:37 to__me:-26 to_be:40 to_know:29 to_leave:25
to_say:-24 to_take:29 to_the:-34 to_you:-22 toda:28 toda_la:30 todo__dia:42 todo_el:37 toma:72 took:-70 took_it:-31
trabajo:27 truck:-38 turnaround:58 two:46 two_$:25 un:104 un__ya:24 un_dia:35 un_rato:73 una:52 una_hora:64 up:35
up_$:50 urgent:-31 urgent_$:-28 ustedes:-23 van__tener:29 vez:30 voy:49 voy_a:25 wait_$:24 waited:-31 waiting:-33
was:-52 we_talking:46 what:-97 what__if:-25 what__it:-67 what__that:-24 what__the:106 what__would:26 what__you:-27
what__your:-25 what_happens:-25 what_is:49 what_would:-59 when:45 when__get:-38 when__i:169 when__it:59 when_i:-128
when_would:75 whens:49 which:-32 who:-69 whole:35 why:-111 why_$:-39 why__i:-39 why_would:-27 will:115 will__be:51
will__have:30 will__it:-32 will__make:25 will__need:34 will__take:33 will_do:-37 will_i:119 will_that:26 will_you:72
work:-43 work_$:-29 would:57 would__be:104 would__get:59 would__have:45 would_be:-41 would_i:138 would_it:61
would_the:-30 y:87 y__cuanto:22 y__por:31 y__que:48 y_a:46 y_como:42 y_cuanto:27 y_para:37 y_tiempo:50 ya__lo:-23
ya_esta:22 ya_lo:-22 ya_mero:25 yep:22 yes:-53 yes_$:-25 yes__would:-24 yes_and:-28 yes_i:-28 yo:-50 you:31 you_$:-44
you__a:-35 you__have:35 you__it:153 you_charge:-22 you_do:54 you_guys:27 you_need:116 you_take:-39 your:-50
"""
