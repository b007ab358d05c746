"""What speaks for and against `duration`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "duration"
BIAS = -211
WEIGHTS = """\
#abaj:31 #aban:24 #aber:28 #abor:-36 #abre:-72 #afte:-85 #agar:-30 #ails:-82 #aite:-23 #aiti:-35 #alca:50 #alcu:32
#algo:92 #alid:38 #alki:32 #alre:-34 #alta:47 #amos:-27 #ance:-32 #anda:-34 #ando:-45 #anta:41 #ante:54 #anto:144
#anza:54 #apid:106 #appe:-27 #arda:289 #arde:-39 #ards:-26 #aria:125 #arlo:40 #aron:-95 #arou:56 #asta:-43 #atan:48
#ater:-37 #atis:-34 #atro:25 #avor:23 #back:54 #bajo:22 #been:-42 #befo:-82 #bout:-29 #brea:24 #bren:-72 #caba:22
#cafe:30 #calc:31 #cant:-29 #canz:52 #card:-26 #cerl:25 #cesi:-23 #cier:-63 #cobr:-29 #coge:85 #cojo:38 #conf:27
#cont:-22 #cosa:25 #cost:24 #cual:-25 #cuan:174 #cuat:26 #cues:-36 #cupa:23 #dado:112 #dari:48 #daro:-50 #days:-38
#deja:49 #dejo:27 #demo:39 #depe:40 #dias:97 #dila:57 #does:138 #done:85 #dorm:23 #driv:-71 #dura:45 #eady:41
#eave:27 #eces:-34 #ecog:67 #ecoj:36 #edan:-45 #edar:44 #edio:26 #efor:-82 #egan:92 #egre:22 #ejar:77 #emor:29
#empo:98 #enen:28 #ener:44 #enga:-24 #engo:61 #enou:42 #ente:-25 #entr:148 #epen:39 #erar:24 #eria:-48 #erlo:34
#ermi:36 #erni:70 #erno:-60 #eron:-38 #erra:-62 #ervi:55 #esas:-25 #esit:-25 #espe:36 #esta:40 #esto:-41 #etie:23
#evan:23 #falt:49 #fast:41 #favo:23 #fini:122 #firm:33 #firs:-23 #fore:-61 #free:-49 #frid:-46 #fter:-86 #gara:-25
#gent:-43 #goin:41 #gone:-36 #grat:-35 #gres:22 #gual:27 #guys:29 #hace:49 #half:-89 #happ:-26 #hast:-54 #have:32
#hens:33 #hese:-126 #hich:-31 #hing:83 #hora:-58 #houl:53 #hump:-30 #hurs:-35 #ible:-23 #icio:32 #iday:-46 #idit:23
#iemp:91 #ierr:-58 #ieza:22 #ight:56 #igua:30 #igue:-22 #ilat:57 #imes:-35 #inis:123 #irme:26 #irst:-23 #ishe:58
#ismo:95 #isto:45 #ited:-23 #itin:-36 #jarl:45 #labo:-36 #lace:-22 #last:-76 #lata:59 #late:-92 #lcan:50 #lcul:32
#leas:23 #leav:29 #lego:-24 #lets:-22 #leva:62 #lida:38 #like:45 #list:56 #lkin:32 #llam:-22 #llev:78 #lock:29
#long:159 #lrea:-34 #luga:-24 #mano:-22 #many:172 #medi:41 #meno:-31 #ment:32 #mero:29 #meti:-23 #mina:32 #mism:88
#mora:41 #much:43 #must:-37 #naro:59 #nder:-23 #nece:-35 #need:88 #next:-23 #nfir:29 #nger:48 #nigh:58 #nina:28
#nish:121 #noug:42 #ntas:67 #ntes:65 #ntos:77 #ntra:36 #ntre:82 #ntro:27 #nute:40 #nuto:-42 #obra:-49 #ocup:44
#oger:68 #oing:24 #oman:24 #onfi:29 #onge:53 #only:-22 #oras:22 #ormi:23 #osta:-28 #otal:-25 #othe:-22 #ough:55
#ould:141 #ound:50 #ours:38 #over:56 #paga:-22 #para:95 #pasa:-22 #pend:38 #pens:-25 #pero:32 #pick:55 #pidi:22
#pido:82 #piez:22 #plac:-25 #plan:44 #ppen:-25 #pued:-102 #push:-22 #qued:133 #quic:86 #quie:-31 #raba:31 #rada:39
#rame:91 #rant:-34 #rapi:102 #rati:-36 #rato:182 #rdad:115 #rdan:132 #read:38 #reak:24 #reco:92 #rega:80 #regr:22
#rgen:-42 #rian:24 #rida:-49 #rive:-68 #rmin:36 #rnig:70 #rnin:27 #rnoo:-60 #ront:25 #roun:54 #rran:-64 #rsda:-39
#ruck:-40 #rvic:55 #sabe:22 #sala:-41 #salg:100 #sali:32 #same:102 #sday:-42 #seri:-37 #serv:52 #shed:58 #shou:53
#sibl:-23 #sigu:-27 #sito:-22 #soon:-25 #sper:42 #stan:-37 #star:104 #stay:28 #sted:-35 #stoy:-22 #sual:31 #swin:-25
#take:120 #talk:31 #tant:23 #tard:248 #tari:70 #teng:37 #term:35 #tern:-60 #ther:-26 #thes:-126 #thin:88 #this:-36
#thur:-35 #tiem:106 #time:187 #ting:-26 #toma:71 #took:-69 #tota:-25 #trab:33 #trad:36 #treg:91 #truc:-42 #turn:82
#uant:180 #uatr:26 #ucho:97 #ueda:61 #uede:-49 #uest:-37 #ugar:-24 #uick:86 #uita:25 #unos:26 #upan:24 #urge:-42
#ursd:-39 #uste:-34 #usua:35 #utos:-43 #vern:70 #vici:34 #wait:-52 #week:-28 #what:-91 #when:108 #whic:-31 #will:127
#wing:-26 #wise:26 #work:-49 #woul:72 #your:-56 %again_later%agree:89 %again_later%away:-35 %again_later%busy:25
%again_later%do_it:-33 %again_later%elsewhere:-28 %again_later%gone_car:37 %again_later%how_long:-216
%again_later%money:224 %again_later%on_way:-59 %again_later%pay_day:-36 %again_later%question:106
%again_later%refuse:-45 %again_later%shift_it:-64 %again_later%start_again:24 %again_later%who:-46 %agree:57
%agree%bad:-32 %agree%bring:65 %agree%call_off:67 %agree%do_it:125 %agree%money:28 %agree%on_way:28
%agree%opening:-33 %agree%place:84 %agree%question:-92 %agree%refuse:26 %agree%start_again:26 %away:56 %away%noise:23
%away%question:-30 %bad:-44 %bad%how_long:28 %bad%meaning:-28 %bring:-39 %bring%call_off:27 %bring%do_it:-22
%bring%how_long:40 %bring%on_way:28 %bring%question:-30 %bring%refuse:28 %bring%shift_it:38 %busy:103
%busy%call_off:28 %busy%how_long:60 %busy%money:41 %call_off:51 %call_off%doubt:25 %call_off%how_long:-46
%call_off%lift:44 %call_off%money:63 %call_off%on_way:37 %call_off%question:38 %call_off%refuse:-67
%call_off%shift_it:-30 %call_off%start_again:44 %car%how_long:33 %car%money:68 %car%question:101
%car_part%how_long:53 %car_part%leave_me:28 %car_part%money:27 %car_part%wrong_one:31 %do_it:39 %do_it%elsewhere:-27
%do_it%family:-23 %do_it%gone_car:58 %do_it%how_long:26 %do_it%lift:40 %do_it%question:61 %do_it%refuse:-22
%do_it%staff:49 %do_it%wrong_one:-45 %doubt:32 %doubt%how_long:23 %doubt%money:34 %doubt%refuse:26 %elsewhere:-54
%elsewhere%question:-26 %fails:-77 %fails%how_long:-32 %fails%money:39 %fails%on_way:23 %fails%question:-34
%family:-24 %family%how_long:29 %family%odometer:-29 %gone_car:-22 %gone_car%leave_me:49 %gone_car%lift:41
%gone_car%money:35 %gone_car%question:121 %gone_car%refuse:-41 %gone_car%staff:34 %gone_car%wrong_one:-30
%how_long:419 %how_long%leave_me:57 %how_long%lift:-35 %how_long%money:270 %how_long%odometer:54
%how_long%opening:-132 %how_long%place:-36 %how_long%question:354 %how_long%refuse:36 %how_long%season:-27
%how_long%shift_it:-92 %how_long%start_again:35 %how_long%thanks:-24 %how_long%who:-44 %leave_me:72 %lift:105
%lift%money:98 %lift%on_way:-28 %lift%opening:-28 %lift%question:145 %lift%who:-45 %machine:-29 %meaning:-152
%meaning%question:-52 %message:-44 %money:-69 %money%odometer:73 %money%on_way:90 %money%pay_day:-42 %money%place:25
%money%question:-47 %money%refuse:98 %noise:-27 %odometer:34 %odometer%question:40 %on_way%question:36
%on_way%refuse:-33 %opening:-132 %opening%question:-46 %pay_day:-65 %pay_day%question:-32 %phone%question:31
%place:-33 %place%question:-62 %question:69 %question%refuse:47 %question%shift_it:47 %question%staff:-24
%question%start_again:27 %question%who:-98 %question%wrong_one:-31 %season:-28 %shift_it:-44
%shift_it%start_again:-22 %smoke_smell:-35 %thanks:-51 %who:-98 %wrong_one:-64 @?:287 @after_visit:-131 @confirm:39
@confirm_stop:-33 @day:24 @nothing:56 @odometer:-57 @offers:46 @reading:-38 @times:24 @walk_in:36 ^_a:-61 ^_am:48
^_any:-30 ^_cant:-24 ^_cost:40 ^_cuantas:32 ^_cuantos:66 ^_depende:36 ^_do:49 ^_does:22 ^_es:98 ^_eta:51 ^_half:-55
^_hasta:-41 ^_hours:-78 ^_how:-45 ^_i:-77 ^_if:23 ^_ill:-50 ^_im:-28 ^_in:22 ^_is:60 ^_it:-54 ^_la:53 ^_last:-42
^_lo:46 ^_me:54 ^_no:-45 ^_noon:25 ^_not:-23 ^_para:72 ^_sale:45 ^_saturday:25 ^_si:-57 ^_that:-62 ^_thursday:-26
^_tienen:-24 ^_wait:-35 ^_what:-46 ^_when:112 ^_whens:23 ^_why:-88 ^_will:83 ^_would:39 ^_ya:-27 ^_you:-49 a:102
a__a:50 a__alla:25 a__hour:27 a__job:35 a__or:24 a__thing:37 a__time:-24 a__y:41 a_estar:44 a_la:-77 a_las:27
a_que:54 a_two:40 abren:-72 abren_$:-41 acaban:25 after:-26 afternoon:-58 afternoon_$:-33 ahi:47 ahi_$:59 al:-33
all:114 all_day:126 already:-34 am:129 am__i:24 am_i:98 an:137 an__day:65 an_all:71 and:129 and__long:28 and__many:31
and__much:-31 and_how:28 and_is:23 and_out:49 anda:-22 antes:70 antes__las:69 antes_de:73 any:-56 any__but:-26
any_day:-57 are:-28 are__talking:37 are_we:31 are_your:-27 as:-43 asi:-26 at:43 at_would:37 back:58 back_$:28
back__hour:-22 back_an:-23 back_by:52 bad:-28 be:101 be_$:-91 be__at:-29 be__by:59 be__the:24 be_done:94
be_finished:32 be_out:35 be_ready:80 been:-42 before:-82 before_it:-91 bout:-34 break:24 but:-29 but__much:-22 by:253
by_$:115 by__time:53 by_noon:45 by_the:40 cafe:30 can__drive:-45 can__get:37 can__pick:59 can__wait:-43 can_it:-24
can_you:66 cant:-25 car:31 cards:-26 cards_$:-26 carro_$:46 cierran:-58 cierran_$:-45 como__se:28 como_cuanto:99
cosa:27 cosa_de:24 cost:36 cost_$:-31 cost_and:32 could_i:24 could_you:22 cuando_lo:116 cuando_me:-24 cuantas:68
cuantas_horas:55 cuanto:39 cuanto_$:-51 cuanto__me:41 cuanto__que:-29 cuanto__sale:-28 cuanto__tardan:25
cuanto__voy:23 cuanto__y:39 cuanto_cuesta:-27 cuanto_demora:23 cuanto_dura:54 cuanto_es:-79 cuanto_me:24
cuanto_por:-48 cuanto_rato:92 cuanto_sale:-35 cuanto_se:124 cuanto_seria:-53 cuanto_tardan:22 cuanto_tiempo:35
cuanto_va:-25 cuantos:77 cuantos_dias:80 cuatro:26 cuesta:-35 cuesta_$:-47 dan:46 day:-45 day_after:-27 day_but:-30
day_i:-26 day_job:41 days:-40 days_$:-34 de:96 de__el:25 de__hora:27 de__por:35 de_las:77 de_todo:27 de_un:22
deja:-39 dejar:37 dejarlo:46 dejo:27 del:-24 demora:37 depende:36 dia:174 dia_$:120 dias:97 did:-31 do:44 do_$:-23
do__have:-29 do__need:93 do__take:-30 do_you:63 does:141 does__take:76 does_it:73 does_that:58 done:85 done__the:35
done_by:84 done_in:23 drive:-63 dura:52 echo:22 el_$:31 el__a:-39 el__dia:145 el_dia:28 el_jueves:-25 el_mismo:118
el_servicio:35 el_trabajo:26 el_viernes:-30 en:22 en__manana:27 en__me:-32 en__que:26 en__se:-33 en_cuanto:-115
en_lo:26 en_un:55 enero:25 enero_$:30 enough:42 enough_$:33 entrada:45 entregan:92 entregan_$:67 entro:28 era:-26
es:82 es_$:-52 es__de:33 es__el:22 es__entrada:45 es__mismo:-22 es__o:37 es__que:-27 es_cosa:24 es_de:100 es_el:-22
es_eso:-33 es_gratis:-33 es_lo:-42 es_que:37 es_rapido:30 esas:-24 ese_dia:-23 eso_se:25 espera:-34 espera_$:-29
esperar:24 esperar_$:30 espero:55 espero_$:41 esta:-28 esta_$:26 estan:-36 estar:61 estaria:79 estoy:-22 eta:51
falta:47 falta_$:52 fast:48 favor:24 finish:64 finished:58 first:-23 for:106 for_$:27 for_a:26 free:-44 free_$:-28
friday:-42 get:48 get__at:24 get__back:85 get__done:-28 get_back:-25 get_it:72 get_off:22 go:-65 going:41
going__be:39 going__take:26 going_to:46 gone:-36 gone_$:-35 got_a:37 gratis:-34 gratis_$:-33 guys:30 hacerlo:28
hacerlo_$:29 half:-89 happens:-25 happens__i:-24 happens_if:-24 hasta:-54 hasta__hora:-48 hasta_que:-48 have:32
have__a:24 have__back:52 have_a:-34 have_got:25 have_it:134 hay_que:24 hora:-75 hora_$:-33 hora__lo:35 hora_abren:-60
hora_cierran:-46 hora_estan:-30 hora_me:33 hora_que:-48 horas:23 hours:39 hours_$:-45 hours__it:22 hours_is:54
how:158 how__and:25 how__can:-67 how__days:25 how__does:42 how__for:26 how__hours:160 how__i:-23 how__is:-46
how__should:23 how__time:99 how__would:-33 how_bout:-34 how_do:-31 how_long:121 how_many:174 how_much:-51 hoy:24
hoy_mismo:39 i:104 i__an:27 i__at:65 i__by:35 i__for:26 i__got:25 i__it:156 i__off:36 i__on:-93 i__that:-26 i__to:27
i_be:59 i_drive:-45 i_get:87 i_go:-60 i_have:44 i_make:37 i_need:-29 i_pick:51 i_plan:36 i_will:-28 if_i:24 igual:27
ill:-43 in:53 in__out:49 in_and:61 is:134 is__a:61 is__an:75 is__free:-23 is__going:34 is__in:23 is__like:29
is__wait:71 is_it:100 is_my:-26 is_that:102 is_the:111 it:116 it_$:-143 it__a:22 it__all:41 it__and:50 it__before:24
it__by:122 it__done:74 it__finished:26 it__it:-28 it__ready:62 it__under:-22 it_a:58 it_an:23 it_back:103 it_be:86
it_cost:-23 it_done:38 it_for:28 it_going:28 it_in:32 it_is:-92 it_like:27 it_out:38 it_take:101 it_up:42 it_wait:-31
it_when:-22 job:114 job_$:76 k:-24 keep_it:23 know_how:24 la__de:-36 la__que:-42 la_hora:-81 la_manana:33 la_pieza:22
labor:-36 labor_$:-22 las:74 las_$:29 las__no:22 las_y:23 last:-79 last_time:-62 late:-64 later:-22 le:-57 leave:28
leave_it:23 les:-50 lets:-22 like:45 like_that:23 listo:45 llego:-24 lleva:55 lleva_$:33 lo:236 lo__de:24 lo__el:55
lo__en:48 lo_dan:57 lo_dejo:33 lo_entregan:87 lo_hacen:29 lo_mismo:-25 lo_puedo:40 lo_recojo:30 lo_tengo:40 long:102
long_$:67 long__i:-68 long__it:-38 long_do:34 long_does:50 long_for:32 long_is:30 long_will:42 long_would:22
longer:54 lugar:-24 make:22 many:172 many__is:47 many_days:25 many_hours:160 many_times:-23 mas:-49 mas_tarde:-31
me_$:-24 me__dan:60 me__entregan:46 me__que:26 me_espero:61 me_lo:125 menos:-31 mero:40 mi:29 mi__de:23 minute:27
minutos:-43 mismo:97 mismo_$:31 mismo_dia:143 monday_$:-26 morning:22 much:-52 much_$:-51 much__how:23 much__i:-29
much__it:-106 much_is:-44 much_time:99 much_will:-49 much_would:-59 mucho:95 mucho_$:37 must:-37 my__back:26
my_car:32 n:22 need:80 need_$:62 need__for:31 need_that:-25 need_to:37 next:-23 nina:28 no:-86 no_$:23 no_tengo:-22
noon:73 noon_$:44 not:-40 o:190 o_es:24 o_no:39 ocupan:24 of_my:29 off_at:24 ok:-55 ok_$:-59 on:-146 on_a:24 one:44
only:-22 or:200 or__i:24 or__it:49 or_a:34 or_is:32 out:119 out_$:38 out_by:74 overnight:70 overnight_$:48 para:97
para__lo:72 para_cuando:57 para_el:-25 para_la:33 para_las:28 pero:-23 pick:62 pick__up:60 pick_it:60 pieza:22
plan:39 please:22 please_$:24 por:22 por_favor:24 por_mi:26 precio_y:36 pueda:-37 pueda_$:-34 puedan:-37 puede:-42
puede_$:-23 puedo__hoy:47 que__abren:-62 que__cierran:-57 que__eso:-34 que__estan:-32 que__me:39 que__sale:22
que__se:22 que_dejar:44 que_es:-66 que_hora:58 que_le:-28 que_lo:-22 que_tan:39 que_tanto:29 queda:114 queda_$:95
quick:77 quick_$:27 rapidito:24 rapido:84 rato:187 rato_me:49 ready:75 recoger:68 recojo:38 saber:28 sala:-41 sale:23
sale_$:-43 sale_el:47 salgo:105 salgo__las:27 salgo_antes:55 salida:45 same:103 same_day:146 same_time:-25 sat:-24
say:-33 se:185 se__a:24 se__con:32 se__el:24 se_hace:45 se_lleva:52 se_lo:-39 se_puede:-31 se_queda:52 se_tarda:22
se_tardan:46 se_va:22 seria:-43 service:22 servicio:34 should:55 should__plan:36 should_i:59 si__de:28 si_es:36
si_lo:37 si_voy:29 si_y:-24 sin:28 son:22 stay:28 stop_$:-26 swing:-25 swing_by:-25 take:125 take_$:48 take__day:25
talking:33 talking_$:25 tan:37 tan__es:26 tanto:27 tarda:43 tarda_$:25 tardan:110 tardan_$:26 tarde:-47 tarde_$:-23
tengo:61 tengo__dejar:44 tengo_que:91 th:-22 that__is:-34 that_day:-73 the:43 the__and:31 the__day:50 the__i:22
the_same:30 the_time:45 the_wait:68 there_$:-30 these:-126 these_$:-101 these_days:-29 thing:108 thing_$:64
thing_or:40 this:-36 this_time:-23 thursday:-38 tiempo:102 tienen_$:26 tienen__de:-27 time:238 time__i:25 time__it:49
time__you:55 time_do:63 times:-25 to:-23 to__all:40 to_be:31 to_know:23 to_say:-23 to_take:23 to_the:-28 todo__dia:27
toma:50 took:-69 took_it:-26 total:-23 trabajo:26 truck:-40 two:38 un:98 un_dia:29 un_rato:70 unos:26 up:30 up_$:52
urgent:-29 urgent_$:-27 voy:42 voy__estar:23 voy_a:33 waited:-23 waiting:-35 was:-61 we_talking:37 week:-30 what:-90
what__if:-24 what__it:-48 what__that:-23 what__the:97 what__would:26 what__you:-31 what__your:-28 what_happens:-24
what_is:44 what_would:-42 when:78 when__get:-36 when__i:166 when__it:58 when_i:-116 when_would:79 whens:33 which:-30
who:-70 why:-99 why_$:-39 why__i:-29 why_would:-22 will:127 will__be:41 will__need:29 will__take:41 will_do:-33
will_i:117 will_you:65 wise:23 work:-44 work_$:-25 would:79 would__be:103 would__get:50 would__have:38 would_i:99
would_it:86 would_the:-26 y:104 y__cuanto:32 y__por:25 y__que:28 y__se:24 y_a:36 y_como:41 y_cuanto:32 y_para:35
y_tiempo:46 ya_mero:30 yes_$:-23 yes_and:-22 yo:-48 you_$:-39 you__a:-30 you__have:35 you__it:137 you_do:40
you_guys:31 you_need:96 you_take:-34 your:-52
"""
