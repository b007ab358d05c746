"""What speaks for and against `duration`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "duration"
BIAS = -195
WEIGHTS = """\
#abaj:35 #aban:31 #aber:17 #able:-17 #abor:-32 #abra:-14 #abre:-60 #acab:21 #acen:27 #acer:24 #afte:-92 #agar:-18
#ails:-80 #aite:-20 #aiti:-26 #ajar:16 #algo:65 #alid:35 #alin:-14 #alir:-16 #alki:41 #alla:22 #allp:-15 #almo:22
#alre:-26 #alta:26 #ambi:-24 #anan:26 #anda:-24 #ande:-14 #ando:-44 #anic:-20 #anta:39 #ante:52 #anto:136 #anty:-18
#anza:30 #apid:82 #appe:-28 #appo:15 #arca:-14 #arda:254 #arde:-50 #ardo:14 #ards:-34 #arge:-23 #aria:88 #ario:-17
#arlo:32 #aron:-86 #arou:45 #asta:-31 #atan:58 #ater:-43 #atis:-31 #atur:32 #avor:17 #ayer:-20 #back:44 #bajo:18
#bala:17 #ball:-16 #bast:19 #been:-44 #befo:-98 #bles:-17 #bloc:14 #book:15 #bout:-32 #bran:-15 #bren:-60 #caba:30
#cada:-14 #calc:25 #camb:-19 #came:17 #cant:-31 #card:-34 #carr:20 #cerl:31 #cesi:-21 #chan:-17 #char:-24 #chec:-17
#cier:-48 #cion:-18 #clar:17 #cobr:-19 #coge:76 #cojo:33 #come:-20 #como:-26 #conf:14 #cont:-21 #cosa:29 #coul:20
#cual:-23 #cuan:169 #cues:-31 #cupa:22 #cupo:22 #dado:110 #dari:31 #daro:-41 #days:-17 #deja:28 #dejo:16 #demo:28
#depe:38 #dias:75 #dila:70 #diod:29 #does:149 #done:76 #dont:-16 #dorm:15 #driv:-62 #dura:38 #eady:25 #eave:37
#eces:-30 #echa:-25 #ecio:22 #ecog:58 #ecoj:33 #edan:-50 #edar:26 #eded:26 #edia:16 #edio:42 #eede:26 #efor:-98
#egal:-15 #egan:80 #egre:30 #ejar:57 #ejor:-14 #ello:-20 #elta:15 #emin:-16 #emor:19 #empo:95 #ende:22 #endi:-14
#endr:21 #enen:18 #ener:43 #enga:-24 #engo:43 #enos:-27 #enou:28 #enta:15 #ente:-18 #ento:-15 #entr:140 #epar:16
#epen:38 #erar:25 #eria:-47 #erlo:39 #ermi:31 #erni:53 #erno:-48 #eron:-20 #erra:-47 #ervi:49 #esas:-28 #esit:-21
#espe:23 #esta:15 #esto:-36 #etal:-23 #etie:14 #etim:-17 #etti:17 #even:24 #falt:28 #fast:44 #favo:17 #fine:-14
#fini:113 #firm:16 #firs:-27 #fore:-72 #free:-49 #fren:-15 #frid:-38 #frie:-16 #from:-14 #fter:-92 #game:26 #gent:-41
#gett:17 #ghly:17 #goin:49 #gone:-36 #grat:-31 #grea:-15 #gres:30 #guen:-22 #gues:-15 #guie:14 #guna:-17 #guys:31
#hace:52 #half:-68 #hani:-17 #happ:-28 #harg:-24 #hast:-45 #heck:-21 #hell:-19 #hens:28 #hese:-113 #hice:-15
#hich:-22 #hing:56 #hone:-16 #hora:-38 #houl:57 #hour:16 #hump:-32 #hurs:-26 #ible:-22 #icio:23 #icle:19 #iday:-38
#idea:19 #idit:14 #iemp:88 #iero:-24 #ierr:-51 #ieza:15 #ight:27 #igue:-18 #ilat:70 #iles:-22 #illa:-19 #imes:-29
#inan:23 #ingu:-25 #inis:115 #init:17 #inos:21 #intm:15 #iodi:29 #irme:19 #irst:-27 #ishe:60 #ismo:60 #isto:39
#ited:-20 #itin:-26 #jarl:31 #just:-26 #keep:26 #king:16 #knoc:14 #know:-15 #labo:-32 #lace:-22 #lada:19 #lant:-20
#larg:14 #laro:16 #last:-73 #lata:81 #late:-108 #leas:19 #leav:35 #lega:27 #lego:-20 #lets:-19 #leva:53 #leve:26
#lgui:14 #lida:34 #like:36 #list:34 #lkin:41 #llam:-14 #llan:-16 #llas:-18 #llev:72 #llpa:-15 #lmos:22 #lock:22
#lonc:20 #long:130 #look:-34 #lpar:-15 #lrea:-26 #luga:-19 #make:-15 #malo:-20 #many:146 #marc:-16 #mart:-17
#mber:-16 #mbie:-25 #mech:-17 #medi:57 #mejo:-14 #meno:-20 #mero:28 #meta:-23 #meti:-22 #mile:-21 #mill:-18 #mina:24
#mind:-17 #mini:16 #mism:54 #miss:25 #mond:-29 #mora:30 #more:-19 #morn:19 #most:18 #mpre:-14 #much:50 #must:-39
#nada:17 #nana:26 #nche:20 #nday:-25 #nder:-17 #nece:-32 #need:88 #nero:28 #next:-17 #nfir:16 #nger:54 #ngun:-25
#nigh:46 #nina:22 #nino:20 #nish:114 #nite:17 #nock:14 #noma:22 #noon:19 #noth:-16 #noug:28 #ntac:-14 #ntas:65
#ntes:59 #nths:-15 #ntme:15 #ntos:79 #ntra:38 #ntre:65 #ntro:34 #numb:-15 #nute:28 #nuto:-39 #obra:-29 #ocup:46
#odia:29 #oger:55 #oing:36 #oint:14 #okin:-28 #oman:30 #omas:23 #onch:20 #onda:-33 #onfi:16 #onge:57 #only:-17
#onta:-14 #onto:21 #ooki:-25 #orev:27 #ormi:15 #orni:19 #orri:-16 #oses:15 #ossi:-16 #osta:-18 #otal:-28 #othe:-25
#ough:46 #ould:140 #ound:42 #ours:22 #over:43 #paga:-18 #para:72 #part:16 #pasa:-22 #paso:22 #pend:37 #pens:-23
#pera:-16 #pero:21 #phon:-16 #pick:43 #pidi:15 #pido:67 #piez:15 #piso:16 #plac:-25 #plan:46 #plea:15 #poin:14
#poss:-16 #ppen:-27 #ppoi:15 #prec:20 #pres:-21 #prim:-14 #pron:21 #pued:-77 #pues:-14 #push:-21 #qued:113 #quic:83
#quie:-37 #raba:35 #rada:36 #rado:-18 #rame:88 #rans:-16 #rant:-19 #rapi:79 #raro:-16 #rati:-32 #rato:173 #rdad:109
#rdan:128 #rday:32 #rder:21 #read:22 #reat:-16 #reco:82 #rega:59 #regr:30 #remi:-16 #rent:-15 #repa:16 #resa:20
#ress:-18 #reve:24 #rgen:-42 #rida:-40 #ried:-14 #rive:-61 #rmin:31 #rnig:53 #rnin:30 #rnoo:-47 #ront:19 #roug:19
#roun:44 #rran:-49 #rrie:-16 #rsda:-30 #rtes:-19 #rtir:14 #ruck:-34 #rvic:49 #sala:-41 #sale:14 #salg:70 #sali:29
#same:91 #satu:32 #sday:-29 #sema:-15 #seri:-35 #serv:47 #shed:59 #shes:19 #shou:57 #sibl:-21 #sigu:-22 #sito:-16
#some:-16 #soon:-22 #sper:27 #ssib:-16 #stan:-34 #star:87 #stat:15 #sted:-25 #stil:14 #stop:-21 #stoy:-23 #stuc:19
#sual:21 #swin:-18 #tact:-14 #take:119 #talk:40 #tara:24 #tard:200 #tari:58 #tarr:17 #tate:15 #tell:-18 #tend:22
#teng:20 #tent:17 #term:31 #tern:-48 #text:-17 #ther:-17 #thes:-113 #thin:67 #this:-24 #thur:-26 #tiem:104 #time:164
#tmen:15 #toma:76 #took:-55 #tota:-28 #trab:36 #trad:32 #tras:-15 #treg:67 #truc:-34 #tuck:19 #turd:32 #turn:73
#uand:-15 #uant:185 #ucho:77 #ueda:37 #uede:-37 #uedo:30 #uelt:15 #uess:-15 #uest:-32 #ugar:-19 #ughl:17 #uick:83
#uier:-17 #uita:15 #umbe:-15 #unos:34 #upan:23 #urda:32 #urge:-42 #urno:15 #ursd:-30 #uste:-24 #usua:22 #utes:16
#utos:-40 #vend:-15 #vern:53 #vice:26 #vici:23 #vien:25 #vola:20 #vuel:14 #wait:-31 #warr:-18 #week:-31 #what:-73
#when:101 #wher:-22 #whic:-22 #wifi:-20 #will:103 #wing:-19 #wise:30 #work:-42 #worr:-14 #woul:63 #yeah:-17 #your:-60
%again_later:-21 %again_later%agree:60 %again_later%away:-26 %again_later%bad:-14 %again_later%bring:-16
%again_later%car_part:-17 %again_later%do_it:-35 %again_later%elsewhere:-19 %again_later%fails:-23
%again_later%gone_car:16 %again_later%how_long:-196 %again_later%lift:16 %again_later%money:176
%again_later%noise:-17 %again_later%on_way:-59 %again_later%opening:-26 %again_later%pay_day:-36
%again_later%place:15 %again_later%question:100 %again_later%refuse:-60 %again_later%season:-17
%again_later%shift_it:-70 %again_later%smoke_smell:-14 %again_later%start_again:28 %again_later%who:-44
%again_later%wrong_one:-16 %agree:58 %agree%away:16 %agree%bad:-28 %agree%call_off:22 %agree%car:23
%agree%car_part:-14 %agree%do_it:145 %agree%gone_car:-14 %agree%opening:-24 %agree%phone:-17 %agree%place:84
%agree%question:-63 %agree%staff:21 %agree%start_again:23 %away:42 %away%bring:-22 %away%call_off:-14
%away%how_long:22 %away%leave_me:16 %away%noise:34 %away%odometer:-14 %away%on_way:26 %away%opening:19
%away%question:-47 %away%start_again:-20 %bad:-51 %bad%fails:20 %bad%how_long:21 %bad%meaning:-25 %bring:-36
%bring%how_long:46 %bring%leave_me:-31 %bring%question:-23 %bring%refuse:31 %bring%shift_it:30 %bring%wrong_one:-17
%busy:83 %busy%how_long:52 %busy%money:23 %busy%noise:18 %busy%on_way:17 %busy%opening:25 %call_off:35
%call_off%do_it:20 %call_off%doubt:14 %call_off%leave_me:16 %call_off%lift:47 %call_off%money:41
%call_off%odometer:16 %call_off%on_way:21 %call_off%phone:-16 %call_off%question:76 %call_off%refuse:-80
%call_off%shift_it:-39 %call_off%start_again:39 %call_off%wrong_one:-17 %car:43 %car%do_it:15 %car%how_long:35
%car%lift:-16 %car%money:53 %car%question:113 %car%shift_it:-14 %car%start_again:15 %car_part:-58
%car_part%how_long:64 %car_part%question:-19 %do_it:65 %do_it%elsewhere:-26 %do_it%family:-18 %do_it%gone_car:52
%do_it%lift:40 %do_it%money:38 %do_it%opening:17 %do_it%question:81 %do_it%refuse:-41 %do_it%staff:56
%do_it%wrong_one:-40 %doubt:28 %doubt%how_long:26 %doubt%money:23 %doubt%on_way:14 %doubt%question:23 %elsewhere:-52
%elsewhere%question:-31 %elsewhere%shift_it:-14 %elsewhere%wrong_one:-22 %fails:-73 %fails%how_long:-29
%fails%money:35 %fails%on_way:24 %fails%question:-48 %family:-22 %family%odometer:-21 %gone_car:-18
%gone_car%leave_me:33 %gone_car%lift:34 %gone_car%money:15 %gone_car%odometer:18 %gone_car%opening:20
%gone_car%question:102 %gone_car%refuse:-44 %gone_car%shift_it:-18 %gone_car%staff:35 %gone_car%wrong_one:-23
%how_long:436 %how_long%leave_me:43 %how_long%lift:-26 %how_long%money:218 %how_long%odometer:55
%how_long%opening:-114 %how_long%phone:-18 %how_long%question:313 %how_long%refuse:35 %how_long%season:-29
%how_long%shift_it:-65 %how_long%start_again:45 %how_long%thanks:-18 %how_long%who:-37 %leave_me:59 %leave_me%lift:14
%leave_me%money:-18 %leave_me%noise:17 %leave_me%opening:16 %lift:108 %lift%money:80 %lift%on_way:-20
%lift%opening:-24 %lift%question:135 %machine:-33 %meaning:-138 %meaning%question:-43 %message:-40 %money:-79
%money%odometer:66 %money%on_way:81 %money%pay_day:-34 %money%place:30 %money%question:-51 %money%refuse:61
%noise%opening:19 %odometer:42 %odometer%question:40 %odometer%shift_it:18 %odometer%staff:19 %odometer%wrong_one:14
%on_way%question:18 %on_way%refuse:-23 %opening:-118 %opening%phone:14 %opening%question:-44 %pay_day:-59
%pay_day%question:-28 %pay_day%season:14 %phone:24 %phone%question:28 %place:-26 %place%question:-54 %place%refuse:16
%question:57 %question%refuse:46 %question%shake:-15 %question%shift_it:59 %question%staff:-35 %question%who:-108
%question%wrong_one:-25 %refuse:-29 %refuse%start_again:-14 %refuse%wrong_one:-21 %season:-19 %shake:-19
%shift_it:-35 %shift_it%start_again:-26 %smoke_smell:-25 %staff:24 %start_again:16 %thanks:-41 %who:-102
%wrong_one:-71 @?:258 @after_visit:-62 @car:-26 @confirm:23 @confirm_stop:-17 @day:33 @later:44 @nothing:28
@odometer:-37 @offers:35 @reading:-36 @times:21 @walk_in:32 ^_a:-72 ^_am:45 ^_any:-20 ^_cant:-21 ^_claro:18
^_como:-18 ^_cost:26 ^_cuantas:25 ^_cuantos:64 ^_de:-21 ^_depende:34 ^_do:41 ^_does:32 ^_el:-35 ^_es:60 ^_eta:67
^_fri:20 ^_half:-53 ^_hasta:-36 ^_hello:-18 ^_i:-66 ^_ill:-36 ^_im:-26 ^_in:17 ^_is:35 ^_it:-45 ^_la:69 ^_last:-39
^_lets:-21 ^_llego:-16 ^_lo:55 ^_lunes:29 ^_me:41 ^_move:-17 ^_no:-16 ^_noon:32 ^_not:-26 ^_ok:14 ^_para:66
^_precio:27 ^_price:22 ^_puedo:-16 ^_push:-19 ^_que:-14 ^_quien:-14 ^_sale:51 ^_saturday:29 ^_si:-43 ^_something:-14
^_te:20 ^_that:-63 ^_thursday:-19 ^_wait:-37 ^_what:-31 ^_when:96 ^_whens:28 ^_where:-17 ^_which:-16 ^_who:-29
^_why:-80 ^_will:76 ^_would:20 ^_ya:-14 ^_yep:22 ^_you:-40 a:72 a__a:46 a__and:22 a__dia:14 a__hour:14 a__is:23
a__job:28 a__like:27 a__or:30 a__por:19 a__thing:27 a__time:-20 a_como:-22 a_la:-68 a_lunch:21 a_mechanic:-16
a_medio:14 a_primera:-19 a_que:62 about_it:-15 abren:-60 abren_$:-35 acaban:32 after:-45 afternoon:-45
afternoon_$:-25 ahi:43 ahi_$:41 alguien:14 all:67 all_day:104 alla:23 almost:22 already:-26 am:122 am__going:18
am_i:71 am_y:22 an:113 an__change:22 an_hour:31 an_oil:22 and:96 and__long:25 and__many:29 and__much:-31 and__you:14
and_how:23 and_i:-15 and_is:23 and_out:51 and_wait:-16 anda:-17 ando:-15 antes:61 antes__las:61 antes_de:56
antes_del:17 any:-41 any__but:-21 any_day:-50 appointment:15 appointment_$:17 are:-19 are__hours:-14 are__talking:46
are_we:40 are_your:-22 as:-59 as__as:-23 as_i:-17 asi:-24 asi_$:-19 at:15 at_$:26 at__it:19 ayer:-15 back:48
back_$:27 back_an:-19 back_by:33 bad:-25 ballpark:-15 basta:19 be:71 be_$:-90 be__at:-25 be__by:61 be__the:19
be__there:21 be_done:72 be_finished:38 be_ready:61 been:-44 been_a:-16 before:-98 before_it:-91 book:17 bout:-37
but:-24 but__much:-22 but_monday:-17 by:190 by_$:101 by_a:-15 by_noon:39 by_the:35 cada:-14 cae:14 call_me:-15
cambie:-16 came:18 can__be:15 can__do:26 can__drive:-40 can__get:41 can__pick:58 can__wait:-39 can_i:15 can_it:-28
can_you:50 cant:-25 car:26 car_$:21 cards:-34 cards_$:-34 carro:28 carro_$:49 charge:-23 check:-15 cierran:-43
cierran_$:-37 claro:18 claro__si:22 come:-19 como:-20 como__las:-17 como_cuanto:82 con:17 con_el:15 con_mi:14 cosa:31
cost_$:-29 could:22 could_i:17 could_you:15 cual:-17 cuando:-15 cuando__el:-14 cuando_lo:100 cuando_tenga:-19
cuantas:59 cuantas_horas:42 cuanto:46 cuanto_$:-58 cuanto__a:-19 cuanto__la:18 cuanto__me:43 cuanto__por:-14
cuanto__sale:-26 cuanto__tardan:26 cuanto__y:23 cuanto_cobran:-14 cuanto_cuesta:-24 cuanto_demora:19 cuanto_dura:53
cuanto_es:-58 cuanto_me:28 cuanto_por:-41 cuanto_rato:80 cuanto_sale:-32 cuanto_se:108 cuanto_seria:-46
cuanto_tarda:14 cuanto_tardan:15 cuanto_tiempo:55 cuanto_va:-25 cuantos:79 cuesta:-31 cuesta_$:-41 cuesta__cuanto:16
cuesta_y:17 dan:49 day:-30 day_after:-24 day_but:-25 day_i:-19 days_$:-16 de:80 de__el:20 de__hora:26 de__por:38
de__si:22 de__y:18 de_a:-15 de_esas:-18 de_las:77 de_un:29 deja:-41 dejar:32 dejarlo:31 dejo:16 del:-37 demora:27
demora_$:19 depende:34 dia:169 dia_$:109 dias:75 did:-28 do:38 do_$:-22 do__charge:-22 do__have:-17 do__keep:23
do__need:90 do__take:-39 do_they:16 do_you:49 does:152 does__take:75 does_a:17 does_it:83 does_that:62 done:76
done__the:36 done_by:92 done_in:19 dont:-16 drive:-57 dura:42 echo:15 el_$:39 el__a:-29 el__dia:113 el__y:-23
el_dia:29 el_jueves:-20 el_lunes:-15 el_mismo:95 el_servicio:20 el_trabajo:27 el_viernes:-23 en__manana:23 en__me:-46
en__que:28 en_cuanto:-112 en_el:-39 en_la:14 en_lo:28 en_un:54 en_una:14 enero:33 enero_$:37 enough:28 enough_$:28
entrada:38 entregan:80 entregan_$:54 entro:35 era:-25 es:87 es_$:-53 es__de:38 es__mismo:-23 es__o:20 es__que:-22
es_de:90 es_eso:-27 es_gratis:-30 es_lo:-33 es_que:27 es_un:21 esas:-27 esas_horas:-17 ese_dia:-17 eso:23 eso_se:31
espera:-38 esperar:25 esperar_$:30 espero:44 espero_$:38 esta:-34 esta_$:15 esta_semana:-15 estan:-32 estar:27
estaria:72 estoy:-23 eta:67 falta:28 falta_$:32 fast:49 favor:17 few:-14 fine:-14 finish:55 finished:60 first:-27
for:71 for_$:31 for_a:25 for_an:17 for_it:-18 forever:27 free:-44 free_$:-29 fri:16 friday:-30 friday_$:-16 from:-14
game:29 get:37 get__at:22 get__back:74 get__done:-30 get_back:-25 get_it:61 get_off:20 getting:17 go:-67 going:49
going__be:42 going__cost:-15 going__take:29 going_to:54 gone:-36 gone_$:-35 got:18 got_a:33 gratis:-31 gratis_$:-30
great:-15 guess:-15 guys:32 hacen:27 hacerlo:31 hacerlo_$:31 had:-15 half:-68 happens:-26 happens__i:-25
happens_if:-25 has:-14 hasta:-45 hasta__hora:-42 hasta_que:-41 have__a:16 have__back:36 have__been:-16 have__it:-14
have_a:-28 have_got:17 have_it:106 have_time:-15 have_you:-14 hay_que:15 hello:-19 here:16 here_$:19 hice:-15
hora:-27 hora_$:-19 hora_abren:-50 hora_cierran:-33 hora_estan:-31 hora_que:-42 hours:23 hours_$:-53 hours__it:28
hours__you:27 hours_is:55 how:147 how__and:22 how__can:-67 how__days:28 how__does:34 how__for:35 how__hours:123
how__i:-14 how__is:-42 how__should:20 how__time:100 how__would:-31 how_bout:-37 how_do:-24 how_is:18 how_long:93
how_many:148 how_much:-23 hoy:19 hoy_mismo:30 i:73 i__a:21 i__at:42 i__by:39 i__for:30 i__got:17 i__it:129 i__off:35
i__on:-86 i__out:31 i__that:-25 i__the:16 i__there:14 i__to:26 i_am:-15 i_be:45 i_came:28 i_can:-14 i_do:-19
i_drive:-41 i_get:82 i_go:-52 i_going:18 i_have:21 i_know:-17 i_need:-16 i_pick:48 i_plan:37 i_will:-20 id:-22
idea:20 if:14 if_i:25 ill:-27 ill__by:-15 ill_swing:-15 im:-47 in:48 in__out:51 in_and:66 in_the:-14 ir:-19 is:127
is_$:-15 is__a:47 is__an:84 is__car:-19 is__free:-26 is__going:34 is__in:30 is__like:26 is_it:111 is_my:-25
is_that:88 is_the:90 it:109 it_$:-140 it__all:34 it__an:-21 it__and:54 it__by:90 it__done:57 it__finished:30
it__i:-18 it__if:15 it__it:-23 it__long:20 it__ready:39 it__time:-17 it__under:-18 it__when:-15 it_a:52 it_an:19
it_back:80 it_be:56 it_done:42 it_for:17 it_going:26 it_in:50 it_is:-91 it_like:26 it_out:25 it_take:97 it_to:-28
it_up:41 it_wait:-28 job:110 job_$:79 just:-23 k:-20 k_$:-17 keep:26 keep_it:29 knock:19 la:27 la_$:16 la__antes:20
la__cuando:15 la__de:-21 la__para:18 la__que:-48 la_de:14 la_hora:-69 la_manana:33 la_puede:17 labor:-32 labor_$:-24
largo:15 las:59 las_$:21 las__que:30 las_si:23 last:-77 last_time:-56 late:-72 later:-32 le:-25 le__a:-15 le_falta:23
leave:37 leave_it:31 les:-50 lets:-19 lets__it:-17 lets_get:-22 like:36 like_an:16 like_that:33 listo:39 llegar:15
llegar_$:14 llego:-20 lleva:56 lleven:15 lo:228 lo__a:-23 lo__ahi:17 lo__asi:-18 lo__de:28 lo__el:44 lo__en:55
lo__le:-16 lo__me:17 lo__yo:-16 lo_cambie:-15 lo_dan:57 lo_dejo:22 lo_entregan:74 lo_hacen:34 lo_hice:-14
lo_mismo:-30 lo_tengo:32 lonche:20 long:73 long_$:66 long__i:-60 long__it:-39 long_do:19 long_does:44 long_for:41
long_is:27 long_it:14 long_will:54 long_would:22 longer:58 looking:-24 looking_at:-23 los:-25 lugar:-19 lugar_$:-17
make__to:-17 malo:-20 manana:26 manana_y:15 many:146 many__is:46 many_days:28 many_hours:123 martes:-17 mas:-70
mas__menos:-15 mas_o:-15 mas_tarde:-27 me_$:-20 me__ahi:27 me__dan:59 me__el:-18 me__entregan:42 me__por:22
me__que:30 me__un:25 me_cobran:19 me_da:14 me_espero:49 me_in:-16 me_la:19 me_lo:103 me_queda:-19 me_sale:-27
mechanic:-17 mechanic_$:-16 media:16 media_hora:21 medio_dia:14 mediodia:29 mediodia_$:18 mejor:-14 menos:-20 mero:34
metal:-23 mi:36 mi_$:15 mi__de:26 mi_carro:16 miles:-21 millas:-15 minutes:16 minutos:-40 mismo:61 mismo_$:31
mismo_dia:105 miss:26 monday:-28 monday_$:-21 months:-15 more:-16 morning:22 move:-18 move_it:-17 mover:16 much:-25
much_$:-46 much__how:22 much__i:-27 much__it:-100 much__the:-22 much_and:18 much_is:-43 much_time:100 much_will:-44
much_would:-59 mucho:77 mucho_$:37 must:-39 my__back:21 my_car:24 nada:18 nada_mas:23 necesito:-16 need:67 need_$:56
need__back:-15 need__bring:21 need__for:19 need_it:-19 need_that:-20 need_to:29 needed:26 next:-17 next_week:-15
nina:22 ninguna:-17 ninos:22 no:-76 no__tiempo:-16 no_but:-19 no_puedo:19 no_tengo:-20 nomas:22 nomas_que:17 noon:67
noon_$:29 not:-45 now:-20 number:-15 o:99 o_es:15 o_menos:-15 ocupo:15 of:48 of_my:39 of_them:-14 off_at:22 oil:18
oil_change:20 ok:-53 ok_$:-57 ok_but:16 on:-145 on_a:35 on_it:-17 on_the:-19 on_your:-15 one:30 only:-17 or:206
or__i:30 or__it:44 or_a:42 or_is:29 other:-14 out:101 out_$:22 out__my:19 out_by:51 out_of:14 over:-18 overnight:53
pagar:-15 pagar_$:-14 para:73 para__lo:68 para_cuando:37 para_el:-29 para_la:29 para_las:22 parte:15 pasa:-17 paso:22
pero:-23 pero_cuanto:-20 pick:47 pick__up:58 pick_it:58 pieza:15 place:-17 plan:40 please:16 please_$:23 pm:14 por:28
por_el:20 por_favor:17 possible:-16 precio:24 precio_y:46 primera_hora:-20 pronto:21 pueda:-40 puedan:-41 puede:-32
puede_$:-20 puedo:42 puedo__hoy:44 push:-20 push__back:-19 push_it:-19 que:-14 que__abren:-51 que__cierran:-43
que__eso:-28 que__estan:-34 que__me:21 que_dejar:36 que_es:-53 que_hora:56 que_le:-16 que_lo:-15 que_tan:40 queda:108
queda_$:97 quick:71 quien:-19 rapido:68 rato:176 rato_me:51 ready:52 recojo:33 roughly:17 saber:17 sala:-41 sale:15
sale_$:-34 sale_el:54 salgo:74 salida:39 salir:-16 same:93 same_day:123 same_time:-22 sat:-19 saturday:35
saturday_$:19 say:-24 se:144 se__a:18 se__con:16 se__el:21 se__en:17 se_lleva:50 se_lo:-28 se_puede:-27 se_queda:50
se_tarda:28 se_tardan:47 se_va:15 semana:-14 seria:-47 seria_$:-27 service:26 servicio:23 shes:19 should:58
should__be:-14 should__plan:37 should_i:66 show:14 si__a:18 si__cuanto:-21 si__dejo:16 si__que:27 si_es:48 si_lo:32
si_nomas:17 si_voy:17 si_y:-22 siguen:-18 sin:29 so:-19 soon:-19 still:14 stop:-28 stop_$:-21 stuck:19 swing:-18
swing_by:-18 take:121 take_$:58 take_the:14 takes_$:17 takes__to:-14 talking:40 talking_$:31 tan:39 tan__es:22
tarda:41 tarda_$:20 tardan:95 tardan_$:31 tarde:-48 te:21 tell:-18 tell_me:-17 tenga:-21 tengo:43 tengo__dejar:36
tengo_que:76 tengo_tiempo:-16 th:-15 that_$:17 that__is:-34 that_day:-64 the:57 the__after:-14 the__at:25 the__day:37
the__i:23 the__on:-17 the__the:14 the_am:14 the_bank:15 the_car:21 the_rd:14 the_same:21 the_time:38 the_wait:67
there_a:-17 there_in:-15 these:-113 these_$:-91 these_days:-18 thing:75 thing_$:49 this:-24 this_$:-21 this_friday:15
this_time:-17 thursday:-29 tie:24 tiempo:97 tiempo_$:24 tiempo_lo:14 tiene:-17 tienen_$:19 tienen__de:-35 time:207
time__i:34 time__it:32 time__you:54 time_do:65 times:-19 to:-31 to__a:33 to__it:17 to__me:-22 to_be:39 to_bring:20
to_cost:-15 to_it:-14 to_know:16 to_leave:19 to_say:-17 to_take:29 to_the:-24 todo__dia:17 toma:47 toma_$:18 too:-18
took:-55 took_it:-24 total:-26 total_$:-14 trabajar:24 trabajo:21 trabajo_$:22 truck:-34 two:30 un:103 un_dia:36
una:17 una_hora:20 uno:-14 unos:34 up:33 up_$:61 urgent:-32 urgent_$:-30 va:-14 van:16 ver:-16 voy:19 voy_a:32
wait:15 wait_$:24 wait__it:-14 wait_or:14 waited:-20 waiting:-26 warranty:-18 was:-48 we_talking:46 week:-24
week_$:-14 what:-71 what__if:-25 what__it:-32 what__that:-25 what__the:80 what__would:25 what__you:-21 what__your:-29
what_do:-23 what_happens:-25 what_is:23 what_would:-28 when:73 when__get:-43 when__i:154 when_i:-105 when_would:62
whens:28 where:-24 which:-21 who:-80 who__this:-14 who_is:-16 why:-89 why_$:-35 why__i:-25 why_would:-21 wifi:-20
wifi_$:-21 will:103 will__it:-18 will__take:55 will_do:-31 will_i:78 will_it:17 will_you:59 wise:30 with:-15 work:-41
work_$:-25 would:68 would__be:93 would__have:30 would__need:-14 would_i:71 would_it:72 would_the:-26 y:73
y__cuanto:28 y__es:-19 y__que:23 y__se:27 y_a:36 y_como:38 y_cuanto:15 ya_lo:-14 ya_mero:21 yeah:-17 yep:22 yes:-15
yes_$:-21 yes__i:16 yes__you:-16 yes_and:-18 yes_do:-15 yo:-35 yo_mismo:-17 you:26 you_$:-37 you__a:-33 you__have:34
you__i:-20 you__it:121 you__the:19 you_charge:-22 you_do:30 you_guys:34 you_keep:27 you_need:91 you_open:-19
you_take:-44 you_think:16 your:-56 your_hours:-18
"""
