"""What speaks for and against `duration`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "duration"
BIAS = -219
WEIGHTS = """\
#abaj:38 #aber:27 #abor:-39 #abre:-71 #afte:-76 #agar:-31 #ails:-72 #aite:-31 #aiti:-42 #alca:76 #alcu:29 #algo:93
#alid:48 #alki:41 #alre:-34 #alta:55 #ambi:-25 #amos:-26 #ance:-26 #anda:-49 #ando:-46 #anta:35 #ante:47 #anto:143
#anza:54 #anzo:32 #apid:108 #appe:-28 #arda:285 #arde:-46 #ards:-25 #aria:156 #ario:-25 #arlo:55 #aron:-101 #arou:60
#asta:-53 #atan:57 #ater:-48 #atis:-41 #atur:27 #avor:27 #back:45 #bajo:26 #been:-53 #befo:-52 #bout:-40 #bran:-26
#brea:47 #bren:-71 #cafe:38 #calc:29 #camb:-33 #cant:-29 #canz:78 #card:-26 #cerl:31 #char:-27 #cier:-61 #cloc:25
#clos:29 #cobr:-32 #coge:86 #cojo:37 #conf:31 #cosa:37 #cost:36 #cual:-36 #cuan:175 #cues:-39 #dado:98 #dara:29
#dari:54 #daro:-48 #days:-36 #deja:66 #dejo:45 #demo:42 #depe:36 #deti:26 #dias:103 #dila:66 #dito:25 #does:124
#done:83 #dorm:26 #driv:-77 #dura:51 #eady:53 #eave:37 #eces:-26 #ecog:69 #ecoj:35 #edan:-43 #edar:54 #edio:32
#efor:-52 #egan:105 #egre:27 #ejar:100 #emor:32 #empo:106 #enen:25 #ener:50 #engo:63 #enou:55 #ente:-31 #entr:151
#epen:36 #erar:28 #eria:-57 #erlo:38 #ermi:44 #erni:97 #erno:-64 #erra:-63 #ervi:73 #esan:25 #esas:-26 #espe:54
#esta:101 #esto:-45 #evar:-25 #ever:-28 #fail:-82 #falt:56 #fast:36 #favo:27 #fini:150 #firm:35 #fore:-32 #free:-46
#frid:-39 #fter:-77 #gara:-25 #gent:-45 #goin:40 #gone:-39 #good:-27 #grat:-41 #grea:-26 #gres:27 #gual:34 #guen:-26
#guys:25 #hace:54 #half:-95 #harg:-27 #hast:-62 #have:26 #hens:50 #hese:-135 #hich:-33 #hile:28 #hing:90 #hole:31
#hora:-49 #houl:49 #hurs:-25 #ible:-28 #icio:30 #iday:-47 #ided:25 #idit:27 #iemp:93 #ierr:-51 #ight:98 #igua:37
#igue:-30 #ilat:66 #imes:-39 #inan:27 #inis:151 #ishe:73 #ismo:86 #isto:48 #ited:-30 #itin:-42 #jarl:72 #just:-29
#labo:-39 #lant:-27 #last:-90 #lata:66 #late:-104 #lcan:76 #lcul:29 #leav:37 #leva:57 #leve:27 #lida:48 #like:44
#list:57 #lkin:41 #llam:-25 #llev:64 #lock:31 #long:162 #look:-27 #lose:34 #lrea:-34 #luga:-28 #make:30 #many:182
#medi:38 #meti:-26 #mina:39 #mism:74 #mora:44 #morn:27 #much:56 #must:-44 #naro:60 #nder:-31 #nece:-40 #need:100
#next:-29 #nfir:32 #nger:56 #nigh:94 #nina:25 #nish:149 #noon:53 #noug:55 #ntas:66 #ntes:58 #ntos:84 #ntra:44
#ntre:91 #nute:43 #nuto:-36 #obra:-52 #ocup:38 #oger:71 #oing:28 #onch:30 #onfi:32 #onge:62 #only:-37 #ormi:26
#orni:27 #ossi:-27 #osta:-30 #ough:63 #ould:136 #ound:48 #ours:46 #over:86 #paga:-27 #para:98 #pasa:-37 #pend:35
#pens:-28 #pero:49 #pick:61 #pidi:27 #pido:80 #plan:38 #poss:-25 #ppen:-25 #pued:-125 #qued:150 #quic:107 #quie:-34
#raba:37 #rada:49 #rame:73 #rant:-35 #rapi:111 #rati:-42 #rato:184 #rdad:104 #rdan:141 #rday:26 #read:49 #reak:47
#reat:-26 #reco:87 #rega:89 #regr:27 #rgen:-45 #rian:26 #rida:-48 #rive:-77 #rmin:43 #rnar:61 #rnig:97 #rnin:33
#rnoo:-63 #roun:56 #rran:-64 #ruck:-41 #rvic:63 #sala:-46 #sale:35 #salg:102 #sali:39 #same:97 #satu:27 #sday:-43
#seri:-45 #serv:60 #shed:69 #shou:49 #sibl:-29 #side:28 #sigu:-34 #soon:-26 #sper:61 #stan:-44 #star:127 #sted:-42
#sual:29 #swin:-26 #take:123 #talk:39 #tant:26 #tard:241 #tari:83 #tene:28 #teng:40 #term:42 #tern:-63 #thes:-135
#thin:94 #this:-45 #thur:-25 #tiem:110 #time:207 #toda:38 #toma:93 #took:-70 #trab:39 #trad:42 #treg:101 #truc:-43
#ttin:30 #turd:27 #turn:81 #uant:176 #ucho:97 #ueda:72 #uede:-75 #uest:-38 #ugar:-28 #uick:107 #uita:31 #upan:25
#urda:27 #urge:-43 #urna:61 #uste:-41 #usua:32 #utos:-37 #vern:97 #vice:31 #vici:32 #wait:-66 #what:-106 #when:102
#whic:-33 #whil:28 #whol:36 #will:138 #wing:-29 #wise:32 #work:-61 #woul:71 #your:-60 %again_later:27
%again_later%agree:94 %again_later%away:-25 %again_later%bring:-25 %again_later%do_it:-47 %again_later%elsewhere:-33
%again_later%gone_car:29 %again_later%how_long:-205 %again_later%money:221 %again_later%on_way:-42
%again_later%pay_day:-44 %again_later%question:90 %again_later%refuse:-47 %again_later%shift_it:-57
%again_later%who:-45 %agree:85 %agree%away:38 %agree%bad:-38 %agree%bring:72 %agree%call_off:82 %agree%do_it:116
%agree%how_long:29 %agree%lift:35 %agree%money:34 %agree%on_way:29 %agree%opening:-28 %agree%place:92
%agree%question:-128 %away:77 %away%how_long:26 %away%question:-25 %bad:-61 %bad%meaning:-30 %bring:-36
%bring%call_off:29 %bring%do_it:-43 %bring%shift_it:34 %busy:107 %busy%call_off:25 %busy%how_long:38 %busy%money:49
%call_off:57 %call_off%doubt:25 %call_off%how_long:-48 %call_off%lift:46 %call_off%money:70 %call_off%on_way:37
%call_off%question:37 %call_off%refuse:-81 %call_off%shift_it:-28 %call_off%start_again:34 %car%how_long:30
%car%money:91 %car%question:116 %car_part:-29 %car_part%how_long:50 %car_part%place:-27 %car_part%question:-29
%car_part%wrong_one:26 %do_it%elsewhere:-25 %do_it%family:-29 %do_it%gone_car:55 %do_it%how_long:28 %do_it%lift:34
%do_it%question:40 %do_it%staff:73 %do_it%wrong_one:-46 %doubt:45 %doubt%how_long:36 %doubt%money:36 %doubt%refuse:26
%elsewhere:-41 %fails:-65 %fails%money:59 %fails%on_way:37 %fails%question:-29 %family:-27 %family%lift:26
%gone_car:-44 %gone_car%leave_me:45 %gone_car%lift:40 %gone_car%money:44 %gone_car%on_way:30 %gone_car%question:128
%gone_car%refuse:-49 %gone_car%staff:33 %gone_car%wrong_one:-30 %how_long:454 %how_long%leave_me:53
%how_long%lift:-38 %how_long%meaning:-26 %how_long%money:285 %how_long%odometer:44 %how_long%opening:-117
%how_long%place:-33 %how_long%question:363 %how_long%refuse:59 %how_long%season:-26 %how_long%shift_it:-91
%how_long%start_again:35 %how_long%thanks:-25 %how_long%who:-53 %leave_me:79 %lift:114 %lift%money:104
%lift%opening:-33 %lift%question:144 %lift%refuse:-25 %lift%who:-43 %machine:-38 %meaning:-179 %meaning%question:-60
%message:-55 %money:-75 %money%odometer:70 %money%on_way:107 %money%pay_day:-57 %money%question:-25 %money%refuse:90
%money%shift_it:28 %noise:-25 %odometer:51 %odometer%question:37 %on_way%refuse:-40 %opening:-96
%opening%question:-31 %pay_day:-86 %pay_day%question:-46 %phone:28 %phone%question:47 %place%question:-71
%question:75 %question%shift_it:53 %question%start_again:30 %question%who:-113 %question%wrong_one:-34 %season:-39
%shift_it:-28 %shift_it%start_again:-25 %smoke_smell:-37 %staff:31 %thanks:-57 %who:-117 %wrong_one:-65 @?:263
@after_visit:-152 @confirm:28 @confirm_stop:-45 @nothing:34 @odometer:-58 @offers:29 @reading:-32 @times:30 ^_a:-63
^_am:56 ^_any:-32 ^_cost:48 ^_cuantas:35 ^_cuantos:75 ^_depende:35 ^_do:62 ^_es:79 ^_eta:46 ^_half:-56 ^_hasta:-45
^_hours:-79 ^_how:-64 ^_i:-91 ^_if:35 ^_ill:-54 ^_im:-29 ^_in:33 ^_is:57 ^_it:-60 ^_la:55 ^_last:-45 ^_lo:37 ^_me:40
^_no:-42 ^_noon:47 ^_not:-28 ^_para:75 ^_sale:44 ^_salgo:29 ^_si:-49 ^_that:-64 ^_tienen:-27 ^_time:115 ^_va:31
^_wait:-43 ^_what:-35 ^_when:110 ^_why:-98 ^_will:79 ^_would:55 ^_ya:-39 ^_you:-51 a:113 a__a:43 a__job:42 a__or:51
a__thing:27 a__time:-26 a__y:39 a_estar:61 a_la:-70 a_las:29 a_que:64 a_tener:28 a_two:43 abren:-71 abren_$:-47
afternoon:-61 afternoon_$:-31 ahi:55 ahi_$:56 ahi_sentado:25 alcanzo:32 alcanzo_a:36 all:129 all_day:140 already:-34
am:144 am__going:25 am_i:123 an:143 an__day:81 an_all:87 and:153 and__it:31 and__long:36 and__many:37 and__much:-26
and_how:47 and_is:44 and_out:58 anda:-34 antes:65 antes__las:63 antes_de:73 any:-58 any_day:-53 are__talking:47
are_we:41 are_your:-25 as:-58 at:95 at__i:29 at_would:37 back:51 back_by:50 bad:-30 be:106 be_$:-103 be__at:-36
be__by:67 be__day:31 be__it:30 be__the:26 be_done:108 be_finished:37 be_out:48 be_ready:84 been:-53 before:-52
before_it:-93 bout:-32 break:48 but:-42 but__much:-25 by:268 by_$:104 by__time:49 by_noon:54 by_the:28 cafe:39
can__do:34 can__drive:-48 can__get:33 can__pick:59 can__wait:-47 can_i:-25 can_it:-30 can_you:72 cant:-25 cards:-25
cards_$:-25 carro_$:56 cierran:-57 cierran_$:-41 como__las:-27 como__se:28 como_cuanto:112 cosa:39 cosa_de:37 cost:50
cost_$:-40 cost_and:31 costo_y:27 could_you:39 cual:-25 cuando_lo:110 cuando_me:-27 cuantas:71 cuantas__son:25
cuantas_horas:58 cuanto:34 cuanto_$:-57 cuanto__el:-26 cuanto__lleva:43 cuanto__me:39 cuanto__que:-26
cuanto__queda:-34 cuanto__sale:-30 cuanto__tardan:33 cuanto__tengo:63 cuanto__y:46 cuanto_cuesta:-30 cuanto_dura:64
cuanto_es:-95 cuanto_me:34 cuanto_por:-47 cuanto_rato:97 cuanto_sale:-36 cuanto_se:144 cuanto_seria:-58
cuanto_tiempo:37 cuanto_toma:26 cuanto_va:-28 cuantos:84 cuantos_dias:88 cuesta:-39 cuesta_$:-51 da:35 da__de:29
da_tiempo:25 dan:41 dan_el:36 day:-56 day_after:-30 day_but:-27 day_i:-27 day_job:47 day_thing:43 days:-31 de:128
de__dia:38 de__hora:42 de__por:43 de_espera:-43 de_las:66 de_un:31 de_una:31 deal:27 deal_$:32 deja:-37 dejar:35
dejarlo:61 dejo:45 dejo_en:33 del:-29 demora:35 depende:34 dia:188 dia_$:133 dia_o:49 dias:103 dilatan:57 do:54
do__need:99 do__take:-34 do_you:56 does:127 does__take:75 does_it:75 does_that:51 done:83 done__the:33 done_by:80
done_in:28 drive:-71 drop:27 drop_off:26 dura:61 el:-30 el_$:25 el__a:-32 el__de:-28 el__dia:151 el_dia:38
el_mismo:118 el_servicio:33 el_trabajo:31 el_viernes:-40 en:44 en__manana:30 en__me:-36 en__que:50 en__rato:60
en__se:-26 en_cuanto:-130 en_lo:51 en_mi:36 en_un:58 enero_$:27 enough:55 enough_$:36 entrada:53 entregan:105
entregan_$:66 era:-30 es:80 es_$:-60 es__de:42 es__el:29 es__entrada:39 es__o:34 es__que:-29 es_cosa:37 es_de:142
es_el:-37 es_eso:-36 es_gratis:-38 es_la:-33 es_lo:-49 es_que:38 es_rapidito:31 es_rapido:36 es_tardado:101 esas:-25
ese_dia:-31 espera:-42 espera_$:-34 esperar:29 esperar_$:28 espero:74 espero_$:40 estan:-43 estar:75 estaria:105
estaria_$:41 eta:46 falta:55 falta_$:50 fast:41 favor:27 finish:78 finished:73 finished_$:36 for:121 for_$:36
free:-39 free_$:-34 friday:-41 game:29 get:42 get__back:90 get__done:-35 get_back:-26 get_it:71 go:-73 go_on:-50
going:40 going__be:48 going_to:50 gone:-39 gone_$:-37 good:-27 got:27 got_a:43 gratis:-41 gratis_$:-38 great:-26
guys:25 guys_have:39 hace:34 hacerlo:34 half:-95 happens:-25 hasta:-62 hasta__hora:-52 hasta_que:-54 have:26
have__back:45 have_a:-37 have_it:134 have_you:-34 hay_que:32 hora:-63 hora__lo:36 hora_abren:-59 hora_cierran:-45
hora_estan:-29 hora_me:35 hora_que:-56 horas:25 hours:38 hours_$:-48 hours__it:25 hours_is:56 how:169 how__and:31
how__can:-73 how__days:29 how__does:43 how__for:27 how__hours:175 how__i:-26 how__is:-58 how__longer:47 how__of:48
how__time:103 how__would:-46 how_bout:-31 how_do:-33 how_long:103 how_many:184 how_much:-29 hoy:43 hoy_mismo:40 i:122
i__at:66 i__by:29 i__for:36 i__it:154 i__my:50 i__off:31 i__on:-100 i__out:30 i__that:-32 i_be:91 i_came:26
i_drive:-49 i_get:89 i_go:-62 i_going:25 i_have:30 i_make:51 i_miss:35 i_need:-38 i_pick:50 i_plan:33 i_will:-39
if:41 igual:34 ill:-58 in:50 in__out:58 in_and:68 is:154 is__a:94 is__an:82 is__enough:26 is__free:-29 is__going:31
is__like:45 is__turnaround:53 is__urgent:-29 is__wait:79 is_it:125 is_my:-32 is_that:114 is_the:111 it:114 it_$:-120
it__a:32 it__all:42 it__and:41 it__by:112 it__done:71 it__finished:36 it__it:-35 it__long:33 it__quick:45
it__ready:69 it__same:34 it__when:-27 it_a:76 it_back:92 it_be:75 it_cost:-27 it_done:32 it_going:27 it_in:25
it_is:-100 it_like:43 it_off:-27 it_out:31 it_overnight:45 it_take:118 it_to:-30 it_up:40 it_urgent:-29 it_wait:-35
it_when:-26 job:129 job_$:74 just:-25 k_$:-26 la:29 la__de:-54 la__que:-50 la_hora:-97 la_manana:44 labor:-39 las:67
las_$:37 last:-93 last_time:-67 late:-67 later:-32 le:-65 leave:38 les:-45 lets_get:-25 like:44 like_a:33 listo:48
listo_$:28 lleva:60 lleva_$:31 lo:234 lo__el:47 lo__en:47 lo_dan:54 lo_dejo:47 lo_entregan:94 lo_hacen:29
lo_mismo:-27 lo_ocupan:25 lo_puedo:43 lo_recojo:31 lo_tengo:35 lo_tienen:85 long:87 long_$:77 long__i:-82
long__it:-46 long_and:25 long_do:31 long_does:50 long_for:33 long_is:28 long_will:39 longer:63 longer_$:45 lugar:-28
make:32 make__to:-26 many:182 many__is:50 many_days:29 many_hours:177 mas:-30 mas_tarde:-33 me_$:-30 me__dan:57
me__el:-27 me__entregan:58 me__que:30 me__tiempo:25 me__un:27 me_da:36 me_espero:52 me_lo:124 mero:34 mi__de:31
mi_break:28 min:35 minute:31 minutos:-37 mismo:87 mismo_$:26 mismo_dia:148 miss:25 monday:-29 morning:31 much:-35
much_$:-55 much__i:-35 much__it:-122 much__my:50 much_is:-52 much_longer:47 much_time:103 much_will:-53
much_would:-71 mucho:94 mucho_$:46 must:-44 my:86 my_morning:27 need:92 need_$:59 need__for:30 need_that:-31
need_to:43 next:-29 nina:25 no:-108 no_$:26 noon:115 noon_$:49 not:-37 o:270 o_hay:25 o_mas:44 o_no:35 o_que:29
o_se:25 ocupan:25 ocupan_$:25 of:49 of__morning:30 of_my:58 off_at:33 ok:-53 ok_$:-66 on:-143 on__it:32 one:78
only:-37 or:239 or__i:27 or__it:43 or_a:37 or_is:27 or_what:30 out:142 out_$:42 out_by:90 overnight:97 overnight_$:71
para:103 para__lo:69 para_cuando:65 para_el:-29 para_la:40 para_las:36 pero:-25 pick:65 pick__up:59 pick_it:59
plan:34 pm:26 por:29 por_favor:27 precio_y:42 pueda:-34 pueda_$:-32 puedan:-37 puede:-61 puede_$:-33 puedo__hoy:44
que__abren:-63 que__cierran:-56 que__eso:-39 que__estan:-34 que__me:47 que__sale:33 que__se:26 que_dejar:43
que_es:-61 que_esperar:38 que_hora:70 que_le:-32 que_tan:38 que_tanto:31 queda:117 queda_$:97 queda_el:26 quick:98
quick_$:25 quick__or:38 rapidito:28 rapido:82 rapido_$:43 rato:192 rato_$:28 rato_me:48 ready:87 recoger:71 recojo:37
saber:27 sala:-46 sala_de:-44 sale:37 sale_$:-34 sale_el:48 salgo:107 salgo_antes:51 salida:55 same:99 same_day:141
same_time:-26 saturday:30 say:-31 se:187 se__a:27 se__con:30 se__el:26 se__en:42 se_hace:55 se_lleva:57 se_lo:-51
se_pueda:-32 se_puede:-42 se_queda:61 se_tardan:71 sentado:25 ser:-25 seria:-49 service:32 servicio:32 should:52
should__plan:33 should_i:59 si__de:25 si_es:35 si_lo:41 si_voy:34 si_y:-28 siguen:-27 sin:40 sin_carro:39 stop_$:-27
swing:-26 swing_by:-25 take:130 take_$:56 take__day:32 take_long:25 talking:42 talking_$:37 tan:36 tan__es:25
tanto:29 tarda:43 tarda_$:25 tardado:103 tardan:124 tardan_$:32 tardan_mucho:36 tarde:-48 tarde_$:-29 tener:28
tengo:63 tengo__dejar:43 tengo_que:96 that__all:34 that__be:-29 that__is:-36 that_a:29 that_day:-76 that_take:28
that_would:-28 the:72 the__and:36 the__at:44 the__day:47 the_game:29 the_same:34 the_time:36 the_turnaround:53
the_wait:76 there_$:-54 there_all:26 these:-135 these_$:-105 these_days:-32 thing:104 thing_$:77 thing_or:30 this:-45
tiempo:107 tienen_$:31 tienen__de:-29 time:262 time_$:28 time__i:31 time__it:45 time__you:53 time_do:60 time_to:31
times:-26 to__all:37 to__me:-25 to_be:44 to_know:29 to_leave:25 to_take:29 to_the:-33 toda:28 toda_la:30 todo__dia:45
todo_el:40 toma:77 took:-70 took_it:-31 trabajo:30 truck:-37 turnaround:61 two:46 two_$:26 un:104 un_dia:35
un_rato:72 una:54 una_hora:65 up:38 up_$:50 urgent:-31 urgent_$:-28 van__tener:29 vez:30 voy:48 voy_a:25 waited:-30
waiting:-42 was:-54 we_talking:47 week:-26 what:-100 what__it:-64 what__the:105 what__would:26 what__you:-26
what__your:-30 what_is:49 what_would:-55 when:58 when__get:-36 when__i:169 when__it:61 when_i:-122 when_would:77
whens:50 which:-32 who:-73 whole:36 why:-112 why_$:-40 why__i:-36 why_would:-25 will:138 will__be:56 will__have:30
will__it:-30 will__make:26 will__need:35 will__take:39 will_do:-33 will_i:120 will_that:27 will_you:73 work:-40
work_$:-28 would:82 would__be:116 would__get:60 would__have:48 would_be:-38 would_i:145 would_it:66 would_the:-29
y:100 y__por:31 y__que:46 y_a:44 y_como:42 y_cuanto:31 y_para:37 y_tiempo:51 ya__lo:-25 ya_mero:25 yes:-54
yes_and:-27 yes_i:-27 yo:-54 you_$:-43 you__a:-37 you__have:35 you__it:155 you_do:53 you_guys:26 you_need:118
you_take:-38 your:-58
"""
