"""What speaks for and against `call`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "call"
BIAS = -151
WEIGHTS = """\
#abla:92 #able:102 #abou:73 #adie:-57 #agen:62 #ager:21 #akes:28 #akin:-22 #algu:58 #alir:20 #alki:-68 #alle:-41
#amad:49 #amam:39 #aman:28 #amar:44 #amen:150 #amos:28 #anag:21 #anas:-59 #anda:-18 #ando:31 #anic:20 #anks:-21
#answ:-82 #anym:-22 #apun:-19 #arca:226 #aren:-32 #arme:63 #aron:-84 #arqu:134 #arre:23 #asem:23 #ater:-28 #athe:50
#ativ:24 #ator:36 #auto:-30 #avor:20 #band:27 #been:-49 #belo:-20 #bill:21 #blan:-21 #blar:75 #blem:89 #bout:73
#brak:38 #buzz:-18 #call:173 #came:113 #canc:-25 #celu:-18 #cesi:23 #chan:31 #ched:-24 #chem:167 #cier:-22 #comu:27
#cond:-25 #conf:18 #cont:-80 #coul:30 #cuan:40 #days:-31 #deal:18 #desp:20 #dial:22 #digo:21 #ding:-18 #disc:36
#dont:31 #duen:25 #dule:-22 #eady:-28 #eard:-20 #ease:51 #ebod:38 #echa:28 #eche:168 #ecio:-22 #econ:-23 #eden:73
#edul:-22 #eeks:-18 #eeti:-26 #efie:53 #efon:-23 #egla:23 #ejor:95 #elef:-23 #elep:55 #else:-24 #elul:-18 #eman:-64
#emov:-26 #endi:-18 #engo:24 #enme:161 #enor:-25 #enta:25 #ente:29 #eone:33 #eopl:-66 #epho:55 #eply:-22 #erat:45
#eron:-61 #erso:43 #esen:34 #esit:23 #espo:40 #essa:-22 #esta:-67 #este:-65 #esto:48 #etin:-26 #ette:19 #ever:-74
#exto:20 #favo:20 #fier:53 #fine:-25 #firm:18 #firs:-28 #fono:-67 #foun:-19 #garo:-18 #gent:69 #give:51 #gles:-18
#goin:-20 #guie:27 #guys:-57 #habl:209 #hank:-25 #have:24 #hear:-34 #hedu:-22 #hici:-21 #hing:29 #hoev:64 #hone:66
#hout:20 #huma:37 #hurs:-21 #husb:27 #icar:33 #icie:-19 #iend:20 #iero:39 #igui:-20 #inst:22 #ique:20 #irst:-28
#iscu:37 #isnt:-27 #join:20 #july:-36 #just:22 #kind:20 #king:-88 #lain:20 #lama:160 #lame:162 #last:-18 #late:-43
#leas:49 #lefo:-23 #leme:78 #lenm:-23 #leph:55 #lgui:47 #lica:-22 #line:63 #live:25 #lkin:-68 #llam:319 #lled:-49
#long:-27 #lula:-18 #mada:41 #mame:39 #mana:-45 #marc:224 #marq:134 #mebo:38 #meet:-26 #mejo:95 #menm:128 #ment:-22
#meon:33 #mess:-29 #morn:-58 #morr:27 #move:-33 #muni:26 #nadi:-57 #nage:20 #ncel:-25 #near:24 #nece:22 #need:43
#neve:-99 #nfir:19 #ning:-49 #nobo:-42 #nste:23 #nswe:-82 #nter:-20 #ntes:-52 #nunc:-37 #nymo:-22 #obod:-42 #obot:19
#obre:18 #oeve:64 #oing:-21 #omeb:38 #omeo:33 #omor:27 #omun:27 #onea:35 #onfi:19 #onsi:-20 #onte:-65 #oper:45
#ople:-66 #orks:-22 #orni:-58 #orro:27 #orry:-37 #ould:71 #ound:-22 #over:41 #owns:18 #para:62 #pase:22 #peak:92
#peop:-66 #pera:44 #pero:53 #pers:42 #phon:67 #pick:-88 #ping:18 #plai:21 #plat:24 #plea:53 #plic:-21 #poke:-26
#posa:29 #prec:-22 #pref:56 #pres:26 #pued:108 #punt:-19 #quem:105 #quen:42 #quit:-19 #rake:38 #rath:52 #rato:78
#rcar:24 #reci:-25 #refi:53 #regl:26 #remo:-26 #repl:-24 #repr:23 #rese:30 #ribe:-19 #ring:177 #rmen:-19 #rnin:-48
#robo:19 #rong:-24 #rque:143 #rreg:27 #rrow:27 #rsda:-19 #rson:43 #sage:-21 #same:27 #sban:27 #sche:-22 #sday:-22
#seat:-18 #seco:-24 #sema:-64 #seme:23 #send:-21 #seno:-25 #sent:26 #shou:19 #sier:21 #sigu:-21 #sito:24 #sobr:18
#some:58 #sorr:-37 #spea:92 #spok:-26 #spos:34 #ssag:-28 #star:-27 #stea:23 #stop:-35 #swer:-82 #take:-28 #talk:-83
#tall:24 #tati:25 #tead:23 #tele:32 #teng:26 #test:-64 #than:-21 #that:-22 #ther:66 #thin:24 #this:-51 #thur:-21
#tica:20 #ting:-50 #tion:18 #tive:24 #toda:18 #tomo:27 #tres:-18 #ttle:19 #type:22 #typi:21 #uand:33 #ueda:35
#uede:63 #uedo:20 #ueme:105 #uenm:35 #ueno:26 #uevo:-18 #uier:25 #uman:37 #unca:-37 #unde:-18 #ursd:-19 #usba:27
#vece:-20 #volv:-27 #wait:-20 #want:72 #week:-21 #what:-30 #when:-34 #whoe:64 #with:92 #work:22 #woul:43 #wron:-24
#xpla:22 #xpli:-26 #ymor:-22 #your:-25 #ypin:21 %again_later:-29 %again_later%busy:-24 %again_later%call_off:-25
%again_later%elsewhere:-19 %again_later%how_long:-19 %again_later%lift:-21 %again_later%odometer:54
%again_later%phone:77 %again_later%shift_it:-24 %again_later%staff:-27 %again_later%start_again:-33
%again_later%who:-39 %again_later%wrong_one:-35 %agree:-55 %agree%bring:-36 %agree%busy:-21 %agree%car:26
%agree%car_part:20 %agree%doubt:18 %agree%family:22 %agree%leave_me:-41 %agree%machine:46 %agree%odometer:34
%agree%on_way:38 %agree%phone:130 %agree%question:36 %agree%refuse:62 %agree%smoke_smell:22 %agree%staff:39
%agree%wrong_one:23 %away:-107 %away%bring:-20 %away%call_off:-73 %away%car:-22 %away%phone:-73 %away%question:-31
%away%staff:-20 %bad:-24 %bring:-73 %bring%busy:-32 %bring%call_off:-74 %bring%elsewhere:18 %bring%leave_me:-31
%bring%staff:36 %busy%call_off:-50 %busy%phone:22 %busy%shift_it:-19 %busy%wrong_one:29 %call_off:-47
%call_off%car:21 %call_off%doubt:36 %call_off%elsewhere:38 %call_off%fails:24 %call_off%family:22
%call_off%machine:53 %call_off%meaning:26 %call_off%money:20 %call_off%odometer:-22 %call_off%on_way:19
%call_off%phone:171 %call_off%place:45 %call_off%question:22 %call_off%season:-19 %call_off%staff:54
%call_off%start_again:-34 %call_off%who:-24 %call_off%wrong_one:111 %car:-37 %car%doubt:22 %car%family:20
%car%phone:19 %car%staff:-21 %car_part:23 %car_part%do_it:48 %car_part%elsewhere:22 %car_part%phone:54
%car_part%staff:39 %do_it:-55 %do_it%question:-23 %doubt:29 %doubt%phone:64 %doubt%question:26 %doubt%refuse:35
%elsewhere%phone:51 %elsewhere%staff:34 %fails:-36 %fails%phone:21 %family%money:19 %family%odometer:39
%family%wrong_one:-23 %gone_car:-52 %gone_car%staff:-33 %gone_car%wrong_one:-31 %how_long:-53 %how_long%phone:35
%leave_me:-108 %leave_me%message:-26 %leave_me%money:19 %leave_me%phone:-37 %leave_me%wrong_one:-24 %lift:-28
%machine:70 %machine%refuse:58 %machine%staff:76 %machine%wrong_one:36 %meaning:24 %meaning%phone:43
%meaning%refuse:35 %meaning%staff:18 %message:-64 %message%phone:24 %message%start_again:-33 %message%wrong_one:47
%money%phone:83 %money%refuse:44 %money%staff:29 %money%wrong_one:19 %noise:-50 %noise%phone:-29 %noise%question:-26
%odometer%staff:-25 %on_way%phone:57 %on_way%place:22 %pay_day:-25 %phone:533 %phone%place:30 %phone%question:103
%phone%refuse:170 %phone%season:-82 %phone%shift_it:141 %phone%smoke_smell:28 %phone%staff:138 %phone%start_again:43
%phone%wrong_one:40 %place%question:-34 %place%refuse:28 %question:-78 %question%refuse:36 %question%staff:29
%question%wrong_one:-26 %refuse%staff:34 %refuse%start_again:23 %refuse%thanks:-38 %season:-113 %shift_it:47
%shift_it%wrong_one:-20 %smoke_smell:24 %staff:199 %staff%start_again:53 %staff%wrong_one:75 %start_again:-25
%start_again%who:-28 %thanks:-43 %who:-31 %who%wrong_one:-19 %wrong_one:-129 @after_visit:61 @car:20 @confirm:-75
@day:71 @later:-112 @odometer:24 @reading:-60 @times:-55 ^_am:-22 ^_call:41 ^_can:91 ^_como:-29 ^_do:-70 ^_este:-41
^_fine:-23 ^_get:32 ^_got:-41 ^_hableme:20 ^_hablenme:-41 ^_have:34 ^_hit:43 ^_how:-31 ^_id:41 ^_ill:-71 ^_just:25
^_let:-46 ^_llamame:23 ^_llamenme:55 ^_lo:-23 ^_marqueme:26 ^_me:-18 ^_mejor:37 ^_my:28 ^_necesito:23 ^_need:20
^_never:-21 ^_nobody:-26 ^_not:-23 ^_nunca:-25 ^_phone:59 ^_please:-27 ^_por:20 ^_prefiero:50 ^_pueden:62 ^_quien:-27
^_quiero:32 ^_ring:58 ^_se:-27 ^_si:-55 ^_sorry:-30 ^_the:-30 ^_this:-81 ^_we:-28 ^_who:44 ^_works:-20 ^_would:22
^_ya:-42 ^_yes:-41 ^_you:-110 a:94 a__and:35 a__can:-25 a__from:22 a__on:19 a_call:46 a_few:-30 a_human:27 a_las:-24
a_mi:32 a_person:34 a_real:-20 a_ring:40 about:73 about_my:18 about_this:40 al:84 al_rato:42 alguien:47 alguien_$:25
am:-71 am__talking:-38 am_i:-54 and:99 and__want:25 and__will:30 and_we:24 answer:-79 anymore:-22 anymore_$:-21
appointment:-22 are:-33 are__talking:-18 are_we:-18 ask:-20 at:19 auto:-21 been:-49 been__to:-44 brakes:37
brakes_$:28 but__me:21 call:166 call_$:74 call__if:25 call__my:-43 call__to:18 call_me:243 call_my:46 call_off:-58
called:-52 called__back:-34 called_me:-38 came:-19 can:104 can__pick:-35 can__talk:57 can_i:32 can_you:27 cel:-52
cell_$:-18 celular:-18 como__mi:-20 como_cuanto:18 con:149 con__dueno:31 con_alguien:20 con_el:54 could:33 cuando:33
dar:-19 days:-27 days_$:-28 de:-26 del:18 did:24 did_my:38 digo:22 do:-35 do_i:18 do_not:-57 don:19 dont:31
dont__texts:25 dont_do:24 dueno:26 dueno_$:30 el:-44 el_dueno:26 el_telefono:-56 else:-18 en:-67 es_de:-23
escribir:19 ese:-18 esposa:29 este:-67 este_cel:-29 este_telefono:-37 esto:34 estoy__el:20 estoy_en:24 ever:-27
explain:23 explica:-36 favor:20 few:-31 fine:-25 fine__me:-26 fine_with:-23 first:-28 first_$:-29 for:-26 found:-19
get:50 get__a:40 get_a:42 get_me:41 get_my:-33 give:51 give__a:32 give_me:31 going:-20 got:-47 got_to:-36 guys:-57
guys_$:-48 habla:25 hablar:64 hablar__el:28 hablar_con:60 hableme:79 hableme_para:24 hablenme:-23 have:25
have__wrong:-22 heard:-24 heard_of:-18 her:-22 hicieron:-20 hit:43 how:-36 human:46 husband:27 i__a:19 i__do:23
i__it:-30 i__the:-36 i__to:85 i__you:-28 i_dont:66 i_pick:-52 i_speak:48 i_talk:57 i_talking:-38 i_want:53 id:55
id__to:24 id_like:31 id_rather:23 if:50 if__is:19 if_you:26 ill:-75 ill__you:-32 ill_call:-66 im:-29 im__a:-36
im_in:-25 in:-104 in_a:-41 in_july:-36 in_the:-23 ingles:-18 instead:23 is_a:24 is_it:-18 is_there:21 is_this:-22
is_wrong:18 isnt:-27 it:-40 it_$:20 it_off:-31 july:-36 july_$:-36 just:22 just__me:38 just_call:31 la__por:-24
last:-23 later:-25 later_$:-27 le:33 le_digo:22 let:-51 let_me:-50 like_to:22 line:59 line_$:58 live:21 llamada:43
llamada_$:46 llamame:39 llamen:24 llamenme:128 llamenme_$:34 lo:-52 lo_que:-22 los:29 manager:21 marca:38 marca_$:-19
marqueme:85 marquenme:36 me:166 me_$:28 me__al:48 me__dar:-18 me__por:68 me__ring:31 me__to:-26 me__un:-19 me__we:39
me__you:39 me_a:49 me_and:38 me_back:-37 me_explica:-36 me_habla:28 me_if:29 me_in:-37 me_lo:-29 me_please:56
me_pueden:21 me_when:28 me_with:44 meeting:-26 mejor:95 mejor_$:25 mejor__por:18 message:-20 mi:-33 mi_esposa:29
mi_telefono:-32 morning:-57 my_appointment:-25 my_brakes:45 my_cell:-25 my_husband:27 my_phone:-62 my_work:30
nadie:-57 necesito:24 necesito__con:24 need:38 need_to:34 never:-96 never__of:-18 never_heard:-18 new:-28 ni:-36
no:-20 no_$:-29 no__i:19 no_le:19 no_more:20 no_soy:-23 no_veo:19 nobody:-42 not:-84 now:-27 now_$:-18 nuevo:-18
number__the:24 nunca:-37 of:-30 off:-111 off_$:-20 off_my:-44 ok:-22 on:56 on__phone:24 on_the:49 one_of:19 or:-75
over:52 over_the:46 owns:18 para:67 people:-66 pero:55 person:39 person_$:22 phone_$:-66 phone__and:27 phone__to:-18
phone_me:162 pick:-75 pick__up:-40 pick_it:-22 please:56 please_$:25 please__me:29 please_have:18 please_phone:38
please_remove:-21 por:112 por_favor:22 por_telefono:76 precio:-22 prefiero:53 pueden:73 que__llame:20 que_me:42
quien:-31 quien_me:-26 quiero:45 quiero__con:40 quiero_hablar:24 rather:52 rather__to:23 rather_talk:20 rato:33
rato_$:37 ready:-33 ready_$:-32 remove:-26 reply:-22 right_now:-23 ring:201 ring_me:110 salir:20 schedule:-22
schedule_$:-20 se:23 se_me:-19 seat:-18 second:-24 second_$:-21 semanas:-62 semanas_$:-62 send:-19 si:-20
si__favor:-45 si_por:-45 somebody:38 someone:33 someone__me:24 sorry:-37 sorry_i:-21 soy:-29 speak:107 speak_to:84
speak_with:31 stop:-30 take:-19 talk__a:22 talk__the:26 talking:-67 talking_to:-38 telefono:-67 telefono_$:-53
telephone:55 telephone_me:41 tengo:22 text:-27 text_$:-35 text_me:-27 thanks:-20 that:-22 the:60 the__call:30
the_bill:18 the_manager:21 the_second:-21 the_wrong:-26 there:23 this:-51 this_$:31 this__a:22 this_a:-19 this_is:-21
this_isnt:-40 this_phone:-60 thursday:-19 thursday_$:-21 to__in:-27 to__it:22 to__off:-22 to__person:24 to__this:51
to__to:26 to__you:-44 to_call:-54 to_me:-72 to_my:-75 to_speak:54 to_the:18 tomorrow:23 too__for:20 tres:-18
typing:21 un:151 una:71 una_llamada:28 una_persona:22 up:-35 up_$:-22 veces:-20 veo:18 want:56 want_a:22 want_to:28
was:-36 we:-19 we_have:-27 we_talking:-19 weeks:-18 what:-28 when:-31 when__get:35 when__i:-19 when_i:-26 when_im:-31
when_you:40 who:33 who__i:43 who_am:-32 whoever:64 will__it:22 with:93 with_me:-23 with_someone:46 with_the:23
work:37 works:-21 would:43 wrong:-24 y:102 y__cuanto:18 y__digo:21 y_como:18 y_le:19 y_me:-20 y_no:20 ya:-47 yes:-45
yo:-18 you:-214 you_$:-21 you__a:28 you__im:-35 you__the:-22 you_call:46 you_guys:-55 you_have:-27 you_people:-64
your:-20
"""
