"""What speaks for and against `duration`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "duration"
BIAS = -183
WEIGHTS = """\
#abaj:31 #aban:27 #abor:-29 #abre:-53 #acab:18 #acen:24 #acer:21 #afte:-82 #ails:-72 #aite:-19 #aiti:-22 #algo:56
#alid:30 #alki:36 #alla:19 #almo:19 #alre:-23 #alta:22 #ambi:-22 #anan:22 #anda:-22 #ando:-32 #anic:-18 #anta:35
#ante:48 #anto:119 #anza:25 #apid:76 #appe:-25 #arda:231 #arde:-43 #ards:-29 #arge:-20 #aria:79 #arlo:29 #aron:-73
#arou:42 #asta:-29 #atan:49 #ater:-38 #atis:-30 #atur:28 #ayer:-19 #back:40 #bajo:18 #been:-38 #befo:-90 #bout:-29
#bren:-53 #caba:26 #calc:21 #camb:-18 #cant:-28 #card:-30 #carr:19 #cerl:26 #cesi:-18 #char:-21 #cier:-40 #coge:68
#cojo:32 #come:-18 #como:-21 #cosa:25 #coul:22 #cual:-20 #cuan:157 #cues:-29 #cupa:22 #cupo:20 #dado:100 #dari:29
#daro:-33 #deja:28 #demo:26 #depe:33 #dias:67 #dila:60 #diod:25 #does:130 #done:64 #driv:-60 #dura:32 #eady:29
#eave:32 #eces:-27 #echa:-22 #ecio:18 #ecog:52 #ecoj:32 #edan:-46 #edar:25 #eded:22 #edio:36 #eede:22 #efor:-90
#egan:71 #egre:27 #ejar:53 #ello:-19 #emor:18 #empo:85 #ende:18 #endr:19 #ener:38 #enga:-21 #engo:41 #enos:-23
#enou:24 #entr:123 #epen:33 #erar:22 #eria:-41 #erlo:33 #ermi:28 #erni:46 #erno:-41 #eron:-18 #erra:-40 #ervi:41
#esas:-24 #esit:-18 #espe:22 #esto:-33 #etal:-21 #even:21 #falt:24 #fast:38 #fini:103 #firs:-23 #fore:-67 #free:-43
#frid:-36 #fter:-82 #game:22 #gent:-38 #goin:47 #gone:-33 #grat:-30 #gres:27 #guen:-23 #guys:31 #hace:49 #half:-60
#happ:-25 #harg:-21 #hast:-41 #heck:-19 #hell:-19 #hens:24 #hese:-109 #hich:-20 #hing:54 #hora:-33 #houl:49 #hump:-29
#hurs:-24 #ible:-21 #icio:19 #iday:-37 #iemp:77 #iero:-21 #ierr:-43 #ight:23 #igue:-19 #ilat:60 #imes:-26 #inan:20
#ingu:-21 #inis:104 #inos:18 #iodi:25 #irst:-23 #ishe:53 #ismo:49 #isto:35 #ited:-19 #itin:-22 #jarl:28 #just:-23
#keep:23 #labo:-29 #lace:-21 #last:-66 #lata:70 #late:-96 #leav:31 #lega:24 #lego:-18 #lets:-18 #leva:47 #leve:23
#lida:30 #like:31 #list:31 #lkin:36 #llev:65 #lmos:19 #lock:19 #long:100 #look:-30 #lrea:-23 #luga:-19 #many:140
#mbie:-23 #medi:49 #mero:24 #meta:-21 #meti:-20 #mina:21 #mism:43 #miss:21 #mond:-27 #mora:27 #much:46 #must:-31
#nana:22 #nday:-24 #nece:-29 #need:82 #nero:24 #nger:46 #ngun:-21 #nigh:40 #nina:19 #nish:103 #noma:19 #noon:18
#noug:24 #ntas:57 #ntes:54 #ntos:70 #ntra:33 #ntre:59 #ntro:29 #nute:23 #nuto:-35 #obra:-26 #ocup:43 #odia:25
#oger:50 #oing:35 #okin:-25 #oman:26 #omas:19 #onda:-30 #onge:48 #onto:18 #ooki:-22 #orev:23 #otal:-25 #othe:-22
#ough:39 #ould:130 #ound:39 #ours:22 #over:36 #para:69 #pasa:-19 #paso:19 #pend:33 #pens:-21 #pero:22 #pick:41
#pido:63 #plac:-23 #plan:40 #ppen:-24 #pres:-19 #pron:18 #pued:-71 #push:-20 #qued:111 #quic:73 #quie:-33 #raba:30
#rada:31 #rame:79 #rapi:74 #rati:-32 #rato:157 #rdad:100 #rdan:113 #rday:28 #rder:18 #read:26 #reco:76 #rega:54
#regr:27 #resa:18 #reve:20 #rgen:-38 #rida:-39 #rive:-59 #rmin:28 #rnig:46 #rnin:24 #rnoo:-41 #roun:41 #rran:-41
#rsda:-25 #rtes:-18 #ruck:-31 #rvic:41 #sala:-36 #salg:61 #sali:25 #same:85 #satu:28 #sday:-24 #seri:-31 #serv:39
#shed:53 #shou:49 #sibl:-21 #sigu:-23 #soon:-19 #sper:26 #stan:-32 #star:75 #sted:-25 #stop:-18 #stoy:-20 #sual:18
#take:107 #talk:35 #tara:21 #tard:186 #tari:51 #tend:20 #teng:20 #term:28 #tern:-41 #thes:-109 #thin:64 #this:-22
#thur:-24 #tiem:92 #time:159 #toma:66 #took:-51 #tota:-25 #trab:32 #trad:28 #treg:60 #truc:-31 #turd:28 #turn:66
#uant:164 #ucho:69 #ueda:43 #uede:-37 #uedo:29 #uest:-29 #ugar:-19 #uick:73 #unos:29 #upan:22 #urda:28 #urge:-38
#ursd:-25 #uste:-24 #usua:19 #utos:-36 #vern:46 #vice:21 #vici:20 #vien:21 #wait:-28 #week:-27 #what:-64 #when:97
#wher:-19 #whic:-20 #wifi:-19 #will:94 #wise:26 #work:-37 #woul:59 #your:-52 %again_later%agree:57
%again_later%away:-22 %again_later%do_it:-34 %again_later%fails:-22 %again_later%how_long:-180 %again_later%money:157
%again_later%on_way:-51 %again_later%opening:-24 %again_later%pay_day:-32 %again_later%question:105
%again_later%refuse:-53 %again_later%shift_it:-65 %again_later%start_again:25 %again_later%who:-40 %agree:53
%agree%bad:-25 %agree%call_off:21 %agree%car:21 %agree%do_it:126 %agree%opening:-22 %agree%place:83
%agree%question:-53 %agree%start_again:20 %away:42 %away%bring:-18 %away%how_long:19 %away%noise:29 %away%on_way:23
%away%question:-36 %bad:-45 %bad%fails:18 %bad%how_long:19 %bad%meaning:-22 %bring:-28 %bring%how_long:39
%bring%leave_me:-26 %bring%refuse:29 %bring%shift_it:27 %busy:75 %busy%how_long:49 %busy%money:20 %busy%opening:21
%call_off:23 %call_off%lift:42 %call_off%money:36 %call_off%on_way:20 %call_off%question:68 %call_off%refuse:-76
%call_off%shift_it:-37 %call_off%start_again:35 %car:40 %car%how_long:30 %car%money:47 %car%question:104
%car_part:-52 %car_part%how_long:57 %do_it:37 %do_it%elsewhere:-25 %do_it%gone_car:42 %do_it%lift:36 %do_it%money:32
%do_it%question:72 %do_it%refuse:-37 %do_it%staff:49 %do_it%wrong_one:-37 %doubt:28 %doubt%how_long:23
%doubt%money:20 %doubt%question:21 %elsewhere:-48 %elsewhere%question:-27 %elsewhere%wrong_one:-19 %fails:-67
%fails%how_long:-29 %fails%money:31 %fails%on_way:21 %fails%question:-44 %family:-19 %family%odometer:-18
%gone_car:-23 %gone_car%leave_me:31 %gone_car%lift:31 %gone_car%opening:18 %gone_car%question:94 %gone_car%refuse:-40
%gone_car%staff:32 %gone_car%wrong_one:-21 %how_long:387 %how_long%leave_me:37 %how_long%lift:-21 %how_long%money:195
%how_long%odometer:48 %how_long%opening:-96 %how_long%question:286 %how_long%refuse:32 %how_long%season:-26
%how_long%shift_it:-61 %how_long%start_again:36 %how_long%who:-34 %leave_me:53 %lift:101 %lift%money:73
%lift%opening:-22 %lift%question:125 %machine:-31 %meaning:-124 %meaning%question:-37 %message:-36 %money:-77
%money%odometer:58 %money%on_way:72 %money%pay_day:-30 %money%place:29 %money%question:-45 %money%refuse:54
%odometer:39 %odometer%question:37 %on_way%refuse:-20 %opening:-103 %opening%question:-32 %pay_day:-53
%pay_day%question:-25 %phone:24 %phone%question:29 %place%question:-46 %question:73 %question%refuse:44
%question%shift_it:52 %question%staff:-31 %question%who:-96 %question%wrong_one:-24 %refuse:-24 %refuse%wrong_one:-19
%season:-18 %shift_it:-34 %shift_it%start_again:-25 %smoke_smell:-23 %staff:23 %thanks:-36 %who:-93 %wrong_one:-69
@?:209 @after_visit:-56 @car:-23 @confirm:23 @day:31 @later:36 @nothing:32 @odometer:-33 @offers:27 @reading:-34
@walk_in:30 ^_a:-61 ^_am:40 ^_cant:-20 ^_cost:23 ^_cuantas:23 ^_cuantos:58 ^_de:-19 ^_depende:30 ^_do:41 ^_does:28
^_el:-30 ^_es:47 ^_eta:56 ^_fri:18 ^_half:-47 ^_hasta:-33 ^_hello:-18 ^_i:-63 ^_ill:-31 ^_im:-23 ^_is:38 ^_it:-41
^_la:59 ^_last:-34 ^_lets:-21 ^_lo:49 ^_lunes:25 ^_me:37 ^_noon:28 ^_not:-22 ^_para:60 ^_precio:24 ^_price:19
^_push:-19 ^_sale:46 ^_saturday:26 ^_si:-37 ^_that:-56 ^_wait:-34 ^_what:-24 ^_when:93 ^_whens:24 ^_who:-26 ^_why:-76
^_will:65 ^_would:20 ^_yep:20 ^_you:-33 a:74 a__a:40 a__and:19 a__is:20 a__job:25 a__like:23 a__or:28 a__thing:24
a__time:-18 a_como:-19 a_la:-62 a_lunch:19 a_que:59 abren:-53 abren_$:-30 acaban:28 after:-41 afternoon:-39
afternoon_$:-22 ahi:38 ahi_$:35 all:61 all_day:96 alla:20 almost:19 already:-23 am:109 am_i:62 am_y:19 an:102
an__change:18 an_hour:28 an_oil:18 and:82 and__long:21 and__many:27 and__much:-29 and_how:19 and_is:20 and_out:45
antes:56 antes__las:54 antes_de:51 any:-35 any_day:-41 are__talking:40 are_we:34 are_your:-19 as:-53 as__as:-20
asi:-20 at_$:23 back:43 back_$:24 back_an:-19 back_by:32 bad:-22 be:67 be_$:-81 be__at:-22 be__by:57 be__there:19
be_done:68 be_finished:34 be_ready:56 been:-38 before:-90 before_it:-82 bout:-33 but:-21 but__much:-21 by:178 by_$:94
by_noon:34 by_the:34 can__do:21 can__drive:-40 can__get:37 can__pick:53 can__wait:-33 can_it:-24 can_you:42 cant:-23
car:25 car_$:19 cards:-29 cards_$:-29 carro:25 carro_$:42 charge:-20 cierran:-36 cierran_$:-30 claro__si:18
como_cuanto:74 cosa:27 cost_$:-25 could:24 cuando_lo:90 cuantas:53 cuantas_horas:38 cuanto:40 cuanto_$:-51
cuanto__me:39 cuanto__sale:-24 cuanto__tardan:23 cuanto__y:20 cuanto_cuesta:-22 cuanto_dura:47 cuanto_es:-51
cuanto_me:25 cuanto_por:-37 cuanto_rato:73 cuanto_sale:-28 cuanto_se:95 cuanto_seria:-40 cuanto_tiempo:50
cuanto_va:-22 cuantos:70 cuesta:-28 cuesta_$:-37 dan:44 day:-20 day_after:-22 day_but:-20 de:70 de__hora:23
de__por:33 de__si:19 de_las:69 de_un:25 deja:-35 dejar:30 dejarlo:28 del:-31 demora:24 depende:30 dia:157 dia_$:101
dias:67 did:-25 do:38 do_$:-20 do__charge:-19 do__keep:20 do__need:84 do__take:-35 do_you:48 does:133 does__take:66
does_it:73 does_that:53 done:64 done__the:33 done_by:82 done_in:19 drive:-55 dura:38 el_$:34 el__a:-25 el__dia:102
el__y:-20 el_dia:30 el_mismo:82 el_trabajo:24 el_viernes:-20 en__manana:20 en__me:-40 en__que:24 en_cuanto:-98
en_el:-38 en_lo:25 en_un:50 enero:29 enero_$:32 enough:24 enough_$:24 entrada:33 entregan:72 entregan_$:49 entro:30
era:-21 es:69 es_$:-45 es__de:32 es__mismo:-22 es__que:-18 es_de:78 es_eso:-25 es_gratis:-30 es_lo:-30 es_que:24
es_un:18 esas:-24 eso:19 eso_se:27 espera:-33 esperar:22 esperar_$:27 espero:41 espero_$:35 esta:-30 estan:-30
estar:24 estaria:64 estoy:-20 eta:56 falta:24 falta_$:27 fast:41 finish:50 finished:53 first:-23 for:60 for_$:27
for_a:22 forever:23 free:-39 free_$:-27 friday:-29 game:24 get:34 get__at:21 get__back:65 get__done:-27 get_back:-23
get_it:52 get_off:19 go:-63 going:47 going__be:39 going__take:26 going_to:51 gone:-33 gone_$:-32 got_a:29 gratis:-30
gratis_$:-30 guys:32 hacen:24 hacerlo:26 hacerlo_$:26 half:-60 happens:-23 happens__i:-22 happens_if:-22 hasta:-41
hasta__hora:-38 hasta_que:-37 have__back:35 have_a:-23 have_it:99 hello:-19 hora:-25 hora_abren:-43 hora_cierran:-28
hora_estan:-28 hora_que:-39 hours:22 hours_$:-46 hours__it:25 hours__you:24 hours_is:51 how:128 how__and:20
how__can:-69 how__days:25 how__does:32 how__for:29 how__hours:116 how__is:-34 how__time:92 how__would:-29
how_bout:-33 how_do:-22 how_long:72 how_many:142 how_much:-19 hoy_mismo:27 i:63 i__a:18 i__at:36 i__by:34 i__for:26
i__it:117 i__off:32 i__on:-85 i__out:29 i__that:-22 i__to:24 i_be:39 i_came:24 i_drive:-41 i_get:75 i_go:-50
i_have:21 i_pick:45 i_plan:32 id:-19 if_i:20 ill:-23 im:-41 in:43 in__out:45 in_and:59 is:125 is__a:45 is__an:76
is__free:-23 is__going:33 is__in:27 is__like:24 is_it:104 is_my:-22 is_that:83 is_the:83 it:99 it_$:-121 it__all:30
it__an:-19 it__and:47 it__by:84 it__done:55 it__finished:28 it__it:-22 it__long:18 it__ready:37 it_a:49 it_an:18
it_back:69 it_be:54 it_done:36 it_going:26 it_in:45 it_is:-81 it_like:24 it_out:21 it_take:88 it_to:-28 it_up:39
it_wait:-24 job:98 job_$:71 just:-20 k:-20 keep:23 keep_it:25 la:19 la__de:-18 la__que:-43 la_hora:-62 la_manana:28
labor:-29 labor_$:-22 las:57 las_$:20 las__que:26 las_si:20 last:-70 last_time:-51 late:-63 later:-29 le:-21
le_falta:19 leave:33 leave_it:27 les:-42 lets:-18 lets_get:-20 like:31 like_that:28 listo:35 llego:-18 lleva:48
lo:212 lo__a:-20 lo__de:26 lo__el:39 lo__en:47 lo_dan:52 lo_dejo:20 lo_entregan:65 lo_hacen:31 lo_mismo:-27
lo_tengo:30 long:52 long_$:57 long__i:-62 long__it:-34 long_does:40 long_for:35 long_is:24 long_will:50 long_would:20
longer:49 looking:-22 looking_at:-21 los:-23 lugar:-19 manana:22 many:140 many__is:43 many_days:25 many_hours:116
mas:-63 mas_tarde:-24 me_$:-18 me__ahi:23 me__dan:53 me__entregan:36 me__por:19 me__que:27 me__un:22 me_espero:44
me_la:18 me_lo:93 me_sale:-25 media_hora:18 mediodia:25 mero:29 metal:-21 mi:32 mi__de:22 minutos:-36 mismo:49
mismo_$:27 mismo_dia:95 miss:22 monday:-26 morning:18 much:-21 much_$:-39 much__how:19 much__i:-24 much__it:-89
much__the:-19 much_is:-36 much_time:92 much_will:-40 much_would:-54 mucho:69 mucho_$:34 must:-31 my__back:20
my_car:23 nada_mas:19 need:65 need_$:52 need__bring:19 need__for:18 need_that:-18 need_to:26 needed:22 nina:19
ninos:19 no:-72 no_but:-18 no_tengo:-19 nomas:19 noon:59 noon_$:26 not:-38 now:-18 o:86 of:42 of_my:33 off_at:21
ok:-49 ok_$:-50 on:-139 on_a:29 one:27 or:182 or__i:27 or__it:39 or_a:36 or_is:26 out:92 out_$:22 out_by:45
overnight:46 para:71 para__lo:60 para_cuando:34 para_el:-25 para_la:25 para_las:19 paso:19 pero:-19 pero_cuanto:-18
pick:44 pick__up:53 pick_it:53 plan:35 please_$:19 por:23 precio:20 precio_y:40 pronto:18 pueda:-35 puedan:-37
puede:-32 puede_$:-21 puedo:38 puedo__hoy:40 push:-20 push__back:-19 push_it:-19 que__abren:-45 que__cierran:-36
que__eso:-25 que__estan:-31 que__me:19 que_dejar:33 que_es:-47 que_hora:53 que_tan:36 queda:105 queda_$:94 quick:62
rapido:64 rato:159 rato_me:47 ready:52 recojo:32 sala:-36 sale_$:-31 sale_el:48 salgo:64 salida:33 same:87
same_day:112 saturday:30 say:-20 se:128 se__el:18 se_lleva:43 se_lo:-24 se_puede:-27 se_queda:46 se_tarda:25
se_tardan:42 seria:-42 seria_$:-24 service:22 servicio:20 should:49 should__plan:32 should_i:56 si__cuanto:-20
si__que:23 si_es:41 si_lo:29 si_y:-20 siguen:-19 sin:26 stop:-24 stop_$:-18 take:109 take_$:53 talking:35
talking_$:27 tan:35 tan__es:21 tarda:37 tarda_$:19 tardan:85 tardan_$:28 tarde:-41 te:18 tenga:-18 tengo:41
tengo__dejar:33 tengo_que:69 that__is:-30 that_day:-61 the:59 the__at:21 the__day:35 the__i:22 the_car:20 the_same:20
the_time:35 the_wait:59 these:-109 these_$:-90 thing:69 thing_$:46 this:-22 this_$:-19 thursday:-25 tie:21 tiempo:86
tiempo_$:20 tienen_$:18 tienen__de:-31 time:196 time__i:30 time__it:33 time__you:49 time_do:58 to:-30 to__a:29
to__me:-18 to_be:36 to_bring:18 to_take:26 to_the:-21 todo__dia:20 toma:42 took:-51 took_it:-24 total:-24 trabajar:21
trabajo:20 trabajo_$:20 truck:-31 two:26 un:93 un_dia:32 unos:29 up:31 up_$:56 urgent:-31 urgent_$:-28 voy:18
voy_a:29 wait_$:22 waited:-19 waiting:-22 was:-41 we_talking:40 week:-20 what:-62 what__if:-22 what__it:-31
what__that:-21 what__the:73 what__would:24 what__you:-19 what__your:-26 what_do:-21 what_happens:-23 what_is:22
what_would:-25 when:73 when__get:-37 when__i:139 when_i:-90 when_would:57 whens:24 where:-21 which:-19 who:-72
why:-83 why_$:-34 why__i:-22 why_would:-19 wifi:-19 wifi_$:-21 will:94 will__take:49 will_do:-27 will_i:68
will_you:54 wise:26 work:-36 work_$:-22 would:63 would__be:86 would__have:28 would_i:68 would_it:66 would_the:-23
y:68 y__cuanto:26 y__que:22 y__se:24 y_a:32 y_como:35 ya_mero:18 yep:19 yo:-34 yo_mismo:-18 you:33 you_$:-34
you__a:-28 you__have:31 you__it:108 you_charge:-19 you_do:26 you_guys:33 you_keep:24 you_need:85 you_open:-18
you_take:-39 your:-49
"""
