"""What speaks for and against `duration`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "duration"
BIAS = -185
WEIGHTS = """\
#abaj:26 #aban:19 #aber:22 #abor:-28 #abre:-58 #afte:-71 #agar:-22 #ails:-55 #aiti:-29 #alca:39 #alcu:25 #algo:72
#alid:30 #alki:24 #alre:-26 #alta:37 #amos:-22 #ance:-26 #anda:-27 #ando:-33 #anta:30 #ante:39 #anto:119 #anza:43
#apid:80 #appe:-19 #arda:233 #arde:-29 #ards:-18 #aria:95 #arlo:32 #aron:-70 #arou:42 #asta:-33 #atan:38 #ater:-29
#atis:-22 #atro:20 #back:47 #bajo:18 #been:-34 #befo:-57 #bout:-24 #bran:-19 #brea:19 #bren:-58 #caba:18 #cafe:24
#calc:25 #cant:-23 #canz:41 #card:-18 #cerl:20 #cier:-48 #cobr:-26 #coge:64 #cojo:27 #conf:21 #cosa:20 #cost:19
#cual:-21 #cuan:146 #cuat:20 #cues:-29 #dado:76 #dari:36 #daro:-34 #days:-29 #deja:40 #dejo:22 #demo:32 #depe:31
#dias:72 #dila:46 #does:110 #done:74 #dorm:19 #driv:-51 #dura:34 #eady:33 #eave:21 #eces:-24 #ecog:49 #ecoj:26
#edan:-30 #edar:32 #edio:20 #efor:-57 #egan:70 #egre:18 #ejar:57 #emor:24 #empo:84 #enen:26 #ener:35 #engo:46
#enos:-18 #enou:34 #ente:-19 #entr:115 #epen:31 #eria:-38 #erlo:27 #ermi:29 #erni:55 #erno:-50 #eron:-31 #erra:-48
#ervi:42 #esas:-20 #esit:-18 #espe:26 #esta:26 #esto:-32 #etie:19 #evan:19 #falt:38 #fast:31 #fini:92 #firm:25
#firs:-20 #fore:-40 #free:-37 #frid:-36 #fter:-72 #gara:-20 #gent:-29 #goin:31 #gone:-26 #grat:-23 #gres:18 #gual:21
#guys:20 #hace:36 #half:-67 #happ:-19 #hast:-42 #have:24 #hens:27 #hese:-91 #hich:-24 #hing:63 #hora:-48 #houl:41
#hump:-23 #hurs:-29 #ible:-18 #icio:24 #iday:-36 #idit:18 #iemp:81 #ierr:-45 #ieza:18 #ight:41 #igua:23 #ilat:46
#imes:-24 #inis:93 #irme:21 #irst:-20 #ishe:47 #ismo:77 #isto:32 #itin:-30 #jarl:37 #just:-19 #labo:-28 #lant:-18
#last:-53 #lata:47 #late:-69 #lcan:39 #lcul:25 #leav:22 #lego:-18 #leva:49 #lida:30 #like:33 #list:40 #lkin:24
#llam:-18 #llev:61 #lock:23 #long:159 #lrea:-26 #mano:-18 #many:127 #medi:31 #meno:-26 #ment:25 #mero:22 #mina:25
#mism:71 #mora:33 #much:31 #must:-25 #naro:44 #nder:-19 #nece:-25 #need:70 #next:-20 #nfir:22 #nger:39 #nigh:46
#nina:22 #nish:91 #noug:34 #ntas:52 #ntes:48 #ntos:56 #ntra:28 #ntre:64 #ntro:22 #nute:30 #nuto:-29 #obra:-42
#ocup:31 #oger:49 #oing:19 #oman:19 #onfi:22 #onge:43 #only:-18 #oras:18 #ormi:19 #osta:-22 #otal:-19 #othe:-18
#ough:43 #ould:118 #ound:37 #ours:23 #over:43 #para:73 #pend:31 #pero:21 #pick:37 #pidi:18 #pido:61 #piez:18
#plac:-19 #plan:35 #pued:-70 #qued:101 #quic:67 #quie:-28 #raba:26 #rada:31 #rame:59 #rant:-28 #rapi:77 #rati:-23
#rato:136 #rdad:78 #rdan:112 #read:30 #reak:19 #reco:65 #rega:63 #regr:18 #rgen:-29 #rian:19 #rida:-38 #rive:-49
#rmin:30 #rnig:55 #rnin:20 #rnoo:-50 #ront:21 #roun:40 #rran:-49 #rsda:-32 #ruck:-29 #rvic:42 #sala:-29 #salg:79
#sali:24 #same:72 #sday:-35 #seri:-29 #serv:39 #shed:46 #shou:41 #sigu:-18 #sper:30 #stan:-29 #star:80 #stay:22
#sted:-26 #stoy:-19 #sual:25 #take:107 #talk:23 #tant:19 #tard:202 #tari:54 #teng:30 #term:29 #tern:-50 #ther:-21
#thes:-91 #thin:66 #this:-31 #thur:-29 #tiem:91 #time:145 #ting:-24 #toma:57 #took:-46 #tota:-19 #trab:27 #trad:28
#treg:71 #truc:-30 #turn:62 #uant:147 #uatr:20 #ucho:77 #ueda:52 #uede:-34 #uest:-30 #uick:67 #uita:20 #unos:20
#urge:-29 #ursd:-32 #uste:-25 #usua:28 #utos:-30 #vern:55 #vici:25 #wait:-37 #week:-23 #what:-73 #when:86 #whic:-24
#will:107 #wing:-18 #wise:21 #work:-39 #woul:69 #your:-47 %again_later%agree:67 %again_later%away:-28
%again_later%busy:21 %again_later%do_it:-22 %again_later%elsewhere:-21 %again_later%gone_car:28
%again_later%how_long:-164 %again_later%money:166 %again_later%on_way:-41 %again_later%pay_day:-30
%again_later%question:89 %again_later%refuse:-32 %again_later%shift_it:-48 %again_later%start_again:25
%again_later%who:-32 %agree:35 %agree%bad:-24 %agree%bring:47 %agree%call_off:47 %agree%do_it:92 %agree%on_way:21
%agree%opening:-27 %agree%place:64 %agree%question:-68 %agree%refuse:18 %agree%start_again:20 %away:42
%away%question:-19 %bad:-39 %bad%how_long:21 %bad%meaning:-24 %bring:-30 %bring%call_off:20 %bring%how_long:31
%bring%on_way:19 %bring%question:-20 %bring%refuse:21 %bring%shift_it:28 %busy:74 %busy%call_off:23 %busy%how_long:40
%busy%money:32 %call_off:37 %call_off%doubt:19 %call_off%how_long:-38 %call_off%lift:31 %call_off%money:49
%call_off%on_way:27 %call_off%question:31 %call_off%refuse:-55 %call_off%shift_it:-22 %call_off%start_again:39
%car%how_long:33 %car%money:54 %car%question:80 %car_part%how_long:41 %car_part%leave_me:22 %car_part%money:20
%car_part%question:-21 %car_part%wrong_one:24 %do_it:55 %do_it%elsewhere:-20 %do_it%family:-18 %do_it%gone_car:56
%do_it%how_long:26 %do_it%lift:27 %do_it%question:46 %do_it%staff:34 %do_it%wrong_one:-34 %doubt:23
%doubt%how_long:20 %doubt%money:26 %doubt%refuse:20 %elsewhere:-43 %elsewhere%question:-22 %elsewhere%wrong_one:-18
%fails:-59 %fails%how_long:-18 %fails%money:28 %fails%question:-21 %family:-20 %family%how_long:21
%family%odometer:-22 %gone_car%leave_me:36 %gone_car%lift:28 %gone_car%money:26 %gone_car%question:93
%gone_car%refuse:-28 %gone_car%staff:22 %gone_car%wrong_one:-22 %how_long:378 %how_long%leave_me:47
%how_long%lift:-25 %how_long%money:224 %how_long%odometer:43 %how_long%on_way:19 %how_long%opening:-110
%how_long%place:-25 %how_long%question:310 %how_long%refuse:30 %how_long%season:-20 %how_long%shift_it:-68
%how_long%start_again:26 %how_long%thanks:-18 %how_long%who:-31 %leave_me:51 %lift:75 %lift%money:67 %lift%on_way:-22
%lift%opening:-20 %lift%question:108 %lift%who:-31 %machine:-22 %meaning:-117 %meaning%question:-44 %message:-39
%money:-62 %money%odometer:57 %money%on_way:70 %money%pay_day:-36 %money%place:20 %money%question:-35
%money%refuse:74 %noise:-22 %odometer:25 %odometer%question:31 %on_way%question:35 %on_way%refuse:-25 %opening:-114
%opening%question:-49 %pay_day:-53 %pay_day%question:-25 %phone%question:18 %place:-30 %place%question:-47
%question:75 %question%refuse:40 %question%shift_it:33 %question%staff:-21 %question%start_again:25 %question%who:-79
%question%wrong_one:-24 %season:-24 %shift_it:-36 %smoke_smell:-29 %start_again:20 %thanks:-42 %who:-81
%wrong_one:-55 @?:266 @after_visit:-111 @car:-18 @confirm:26 @confirm_stop:-30 @nothing:45 @odometer:-50 @offers:30
@reading:-35 @walk_in:22 ^_a:-49 ^_am:38 ^_any:-23 ^_cant:-18 ^_cost:31 ^_cuantas:25 ^_cuantos:47 ^_depende:28
^_do:36 ^_es:83 ^_eta:41 ^_half:-39 ^_hasta:-31 ^_hours:-57 ^_how:-31 ^_i:-57 ^_if:19 ^_ill:-38 ^_im:-24 ^_is:47
^_it:-43 ^_la:41 ^_last:-27 ^_lo:38 ^_me:45 ^_no:-36 ^_noon:20 ^_not:-19 ^_para:51 ^_sale:29 ^_saturday:19 ^_si:-43
^_that:-45 ^_thursday:-20 ^_wait:-22 ^_what:-35 ^_when:80 ^_whens:18 ^_who:-19 ^_why:-63 ^_will:66 ^_would:31
^_you:-38 a:75 a__a:40 a__alla:20 a__hour:21 a__job:25 a__or:19 a__thing:27 a__y:33 a_estar:35 a_la:-56 a_las:22
a_que:40 a_two:33 abren:-58 abren_$:-33 acaban:20 after:-22 afternoon:-48 afternoon_$:-27 ahi:37 ahi_$:47 al:-26
all:89 all_day:97 already:-26 am:101 am__i:19 am_i:76 an:103 an__day:47 an_all:52 and:98 and__long:23 and__many:24
and__much:-24 and_how:23 and_is:18 and_out:39 anda:-18 antes:52 antes__las:53 antes_de:55 any:-45 any__but:-20
any_day:-45 are:-26 are__talking:29 are_we:24 are_your:-21 as:-36 asi:-20 at:33 at_would:29 back:49 back_$:23
back_by:40 bad:-24 be:93 be_$:-63 be__at:-22 be__by:47 be__the:20 be_done:75 be_finished:25 be_out:27 be_ready:62
been:-34 before:-57 before_it:-63 bout:-26 break:19 but:-22 by:195 by_$:86 by__time:39 by_noon:36 by_the:30 cafe:24
can__drive:-31 can__get:27 can__pick:40 can__wait:-32 can_it:-18 can_you:52 cant:-19 car:23 cards:-18 cards_$:-18
carro_$:38 cierran:-44 cierran_$:-34 como__se:22 como_cuanto:77 cosa:22 cosa_de:19 cost:29 cost_$:-23 cost_and:25
could_i:18 cuando_lo:81 cuando_me:-18 cuantas:54 cuantas_horas:43 cuanto:41 cuanto_$:-42 cuanto__me:31
cuanto__que:-22 cuanto__sale:-20 cuanto__tardan:22 cuanto__voy:18 cuanto__y:30 cuanto_cuesta:-21 cuanto_demora:19
cuanto_dura:40 cuanto_es:-60 cuanto_por:-40 cuanto_rato:69 cuanto_sale:-26 cuanto_se:105 cuanto_seria:-42
cuanto_tardan:19 cuanto_tiempo:32 cuanto_va:-21 cuantos:56 cuantos_dias:59 cuatro:20 cuesta:-28 cuesta_$:-36 dan:35
day:-38 day_$:19 day_after:-22 day_but:-23 day_i:-21 day_job:27 days:-31 days_$:-27 de:70 de__el:21 de__hora:22
de__por:27 de_las:59 de_todo:22 de_un:18 deja:-27 dejar:26 dejarlo:37 dejo:22 del:-21 demora:31 depende:28 dia:139
dia_$:95 dias:72 did:-26 do:27 do_$:-18 do__have:-20 do__need:69 do__take:-21 do_you:42 does:112 does__take:63
does_it:58 does_that:47 done:74 done__the:25 done_by:60 done_in:19 drive:-45 dura:38 echo:18 el_$:25 el__a:-28
el__dia:109 el_dia:25 el_mismo:92 el_servicio:27 el_trabajo:21 el_viernes:-23 en:21 en__manana:21 en__me:-21
en__que:21 en__se:-23 en_cuanto:-84 en_lo:21 en_un:37 enero:20 enero_$:24 enough:34 enough_$:26 entrada:35
entregan:70 entregan_$:49 entro:23 era:-22 es:74 es_$:-42 es__de:26 es__el:18 es__entrada:35 es__o:30 es__que:-19
es_cosa:19 es_de:79 es_eso:-24 es_gratis:-21 es_lo:-30 es_que:30 es_rapido:25 esas:-20 eso_se:20 espera:-24
espera_$:-19 esperar_$:20 espero:40 espero_$:29 esta:-23 esta_$:20 estan:-28 estar:48 estaria:60 estoy:-19 eta:41
falta:37 falta_$:41 fast:35 finish:46 finished:47 first:-20 for:79 for_$:23 for_a:20 for_the:18 free:-33 free_$:-19
friday:-33 get:34 get__back:64 get__done:-20 get_it:55 go:-47 going:31 going__be:29 going__take:21 going_to:35
gone:-26 gone_$:-24 got_a:30 gratis:-22 gratis_$:-21 guys:21 hacerlo:23 hacerlo_$:23 half:-67 hasta:-42
hasta__hora:-37 hasta_que:-37 have:25 have__a:20 have__back:40 have_a:-26 have_got:20 have_it:98 hay_que:20 hora:-61
hora_$:-26 hora__lo:28 hora_abren:-47 hora_cierran:-36 hora_estan:-23 hora_me:26 hora_que:-33 horas:18 hours:24
hours_$:-39 hours_is:38 how:137 how__and:20 how__can:-45 how__days:20 how__does:37 how__for:18 how__hours:115
how__i:-19 how__is:-35 how__time:72 how__would:-18 how_bout:-26 how_do:-25 how_long:126 how_many:129 how_much:-43
hoy_mismo:28 i:85 i__an:21 i__at:52 i__by:28 i__for:20 i__got:20 i__it:118 i__off:25 i__on:-64 i__that:-19 i__to:21
i_be:51 i_drive:-31 i_get:63 i_go:-43 i_have:38 i_make:30 i_need:-19 i_pick:34 i_plan:28 i_will:-22 if_i:21 igual:21
ill:-34 in:38 in__out:39 in_and:48 is:97 is__a:50 is__an:55 is__going:26 is__in:18 is__like:20 is__wait:51 is_it:82
is_my:-19 is_that:72 is_the:81 it:115 it_$:-112 it__all:34 it__and:40 it__before:20 it__by:88 it__done:58
it__finished:21 it__it:-21 it__ready:48 it_a:46 it_an:18 it_back:82 it_be:71 it_cost:-18 it_done:26 it_for:24
it_going:20 it_in:25 it_is:-71 it_like:19 it_out:30 it_take:85 it_up:28 it_wait:-23 job:83 job_$:53 k:-18 keep_it:19
know_how:19 la__de:-30 la__que:-29 la_hora:-60 la_manana:26 la_pieza:18 labor:-28 las:56 las_$:23 las__no:18 las_y:19
last:-55 last_time:-42 late:-49 le:-46 leave:22 leave_it:18 les:-36 like:33 like_that:18 listo:32 llego:-18 lleva:44
lleva_$:26 lo:197 lo__de:19 lo__el:47 lo__en:39 lo_dan:44 lo_dejo:27 lo_entregan:66 lo_hacen:24 lo_mismo:-18
lo_puedo:28 lo_recojo:21 lo_tengo:29 long:114 long_$:55 long__i:-43 long_do:27 long_does:43 long_for:24 long_is:25
long_will:37 long_would:19 longer:43 make:19 many:127 many__is:32 many_days:20 many_hours:115 mas:-35 mas_tarde:-24
me_$:-21 me__dan:46 me__entregan:38 me_espero:43 me_lo:105 menos:-26 mero:32 mi:23 mi__de:19 minute:21 minutos:-30
mismo:78 mismo_$:21 mismo_dia:108 monday_$:-20 much:-45 much_$:-43 much__how:18 much__i:-22 much__it:-78 much_is:-35
much_time:72 much_will:-35 much_would:-40 mucho:75 mucho_$:30 must:-25 my_car:24 n:18 need:62 need_$:42 need__for:25
need_that:-18 need_to:29 next:-20 nina:22 no:-71 no_$:18 noon:57 noon_$:35 not:-33 o:149 o_es:20 o_no:31 of_my:24
ok:-40 ok_$:-43 on:-112 on_a:20 one:32 only:-18 or:152 or__i:19 or__it:38 or_a:27 or_is:25 out:91 out_$:28 out_by:58
overnight:55 overnight_$:38 para:75 para__lo:51 para_cuando:42 para_la:27 para_las:22 pero:-19 pick:43 pick__up:41
pick_it:41 pieza:18 plan:31 please_$:20 por_favor:18 por_mi:21 precio_y:29 pueda:-26 pueda_$:-24 puedan:-24 puede:-28
puedo__hoy:32 que__abren:-49 que__cierran:-44 que__eso:-25 que__estan:-25 que__me:31 que__sale:18 que__se:18
que_dejar:32 que_es:-47 que_hora:41 que_le:-21 que_tan:28 que_tanto:24 queda:88 queda_$:72 quick:59 quick_$:23
quien:-19 rapidito:19 rapido:63 rato:140 rato_$:18 rato_me:35 ready:59 recoger:50 recojo:27 saber:22 sala:-29
sale_$:-31 sale_el:32 salgo:83 salgo__las:21 salgo_antes:44 salida:35 same:73 same_day:106 same_time:-19 sat:-19
say:-24 se:158 se__a:20 se__con:25 se__el:20 se_hace:32 se_lleva:41 se_lo:-27 se_puede:-20 se_queda:36 se_tarda:19
se_tardan:40 se_va:18 seria:-34 service:18 servicio:25 should:43 should__plan:28 should_i:46 si__de:22 si_es:28
si_lo:30 si_voy:23 si_y:-18 sin:23 stay:22 stop_$:-19 take:108 take_$:41 take__day:20 talking:25 talking_$:20 tan:27
tanto:22 tarda:36 tarda_$:21 tardan:94 tardan_$:23 tarde:-35 tengo:46 tengo__dejar:32 tengo_que:67 th:-18
that__is:-24 that_day:-53 the:20 the__and:25 the__day:38 the_same:23 the_time:33 the_wait:49 there_$:-23 these:-91
these_$:-70 these_days:-23 thing:83 thing_$:50 thing_or:29 this:-31 thursday:-30 tiempo:88 tiempo_$:18 tienen__de:-18
time:182 time__i:20 time__it:40 time__you:37 time_do:43 times:-18 to__all:28 to_be:23 to_know:18 to_take:19
to_the:-21 todo__dia:25 todo_el:20 toma:40 took:-46 trabajo:20 truck:-29 two:30 un:73 un_dia:23 un_rato:49 unos:20
up:21 up_$:36 urgent:-20 urgent_$:-18 voy:31 voy__estar:18 voy_a:26 waiting:-29 was:-48 we_talking:29 week:-25
what:-72 what__it:-37 what__the:70 what__would:19 what__you:-23 what__your:-22 what_is:32 what_would:-30 when:61
when__get:-26 when__i:123 when__it:45 when_i:-86 when_would:60 whens:27 which:-24 who:-54 why:-72 why_$:-25
why__i:-21 will:107 will__be:36 will__need:23 will__take:35 will_do:-25 will_i:92 will_you:48 wise:19 with:-19
work:-34 work_$:-19 would:75 would__be:89 would__get:37 would__have:31 would_i:80 would_it:69 would_the:-19 y:76
y__cuanto:22 y__por:19 y__que:23 y__se:20 y_a:29 y_como:29 y_cuanto:25 y_para:29 y_tiempo:37 ya_mero:24 yes_$:-18
yo:-32 you_$:-31 you__a:-24 you__have:23 you__it:106 you_do:30 you_guys:22 you_need:70 you_take:-24 your:-44
"""
