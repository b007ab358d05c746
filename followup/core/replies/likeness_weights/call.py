"""What speaks for and against `call`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "call"
BIAS = -169
WEIGHTS = """\
#abla:100 #able:134 #abou:93 #adie:-48 #adit:23 #agen:52 #ager:50 #akes:33 #akin:-24 #algu:67 #alki:-92 #alle:-48
#amad:58 #amam:46 #aman:33 #amar:52 #amen:173 #amos:31 #anag:50 #anas:-64 #ando:48 #answ:-83 #anym:-25 #apun:-22
#arca:258 #aren:-29 #arle:28 #arme:79 #aron:-94 #arqu:174 #arre:23 #asem:33 #ater:-34 #athe:54 #ator:30 #auto:-32
#avor:42 #band:31 #been:-36 #belo:-24 #bett:35 #bill:24 #blan:-27 #blar:84 #blem:135 #blen:-22 #blow:-26 #bout:93
#brak:35 #call:210 #came:124 #canc:-29 #cell:-23 #cesi:31 #chan:40 #chem:135 #cier:-22 #comu:27 #cond:-27 #conf:23
#cont:-62 #coul:42 #cuan:40 #days:-28 #digo:35 #disc:37 #dita:23 #dont:50 #duen:23 #eady:-41 #eard:-35 #ease:59
#ebod:35 #echa:36 #eche:136 #ecio:-23 #econ:-25 #eden:65 #eeti:-27 #efie:78 #efon:-27 #egla:25 #ejor:89 #elef:-27
#elep:73 #else:-40 #eman:-69 #emov:-33 #engo:29 #enme:186 #enor:-34 #enta:22 #ente:29 #eone:37 #eopl:-58 #epho:73
#eply:-23 #erat:39 #eron:-86 #erso:53 #esen:29 #esit:30 #espo:41 #essa:-27 #esta:-71 #este:-89 #esto:53 #etin:-27
#ette:41 #ever:-87 #favo:42 #fier:78 #fine:-29 #firm:22 #firs:-28 #fona:146 #fono:-72 #foun:-23 #game:31 #gent:57
#gere:28 #give:52 #gles:-26 #goin:-22 #guie:36 #guys:-61 #habl:244 #hank:-22 #have:42 #hear:-63 #heme:136 #hoev:80
#hone:88 #houg:22 #hous:22 #huma:57 #hurs:-32 #husb:31 #icar:56 #iend:24 #iero:59 #ions:22 #ique:22 #irst:-28
#iscu:38 #isnt:-24 #ivin:22 #july:-35 #just:28 #kind:24 #king:-111 #know:29 #lama:194 #lame:176 #larl:25 #last:-23
#late:-45 #leas:60 #lefo:-27 #leme:111 #lenm:-29 #leph:73 #lgui:57 #like:26 #line:72 #live:37 #lkin:-92 #llam:379
#lled:-61 #long:-30 #mada:35 #mame:46 #marc:261 #marm:69 #marq:174 #mebo:35 #meet:-28 #mejo:89 #menm:157 #ment:-34
#meon:37 #mess:-33 #morn:-63 #morr:30 #move:-42 #muni:24 #nadi:-48 #nage:50 #nazo:146 #nece:29 #need:41 #neve:-120
#nfir:25 #ngam:36 #ning:-54 #nobo:-42 #nswe:-83 #ntes:-55 #nunc:-42 #nymo:-25 #obod:-42 #oeve:80 #oing:-25 #omeb:35
#omeo:37 #omor:30 #omun:27 #onaz:146 #onea:32 #onfi:24 #onga:34 #onte:-65 #oper:39 #ople:-58 #orks:-28 #orni:-63
#orro:30 #orry:-43 #ough:27 #ould:94 #ouse:23 #over:55 #para:68 #pase:31 #peak:95 #peop:-58 #pera:39 #pero:63
#pers:51 #phon:90 #pick:-114 #plat:29 #plea:63 #poke:-29 #pong:36 #posa:32 #prec:-24 #pref:95 #pued:99 #punt:-24
#quem:131 #quen:55 #ques:24 #quit:-35 #quot:-26 #rake:35 #rath:56 #rato:72 #rcar:22 #read:-24 #reci:-29 #refi:78
#regl:28 #remo:-33 #rese:24 #ring:230 #rmen:-22 #rnin:-52 #rong:-22 #rque:184 #rreg:29 #rrow:30 #rsda:-29 #rson:53
#sban:31 #seco:-27 #sema:-69 #seme:32 #send:-30 #seno:-34 #sent:22 #sier:28 #sigu:-23 #sito:32 #some:55 #sorr:-43
#spea:95 #spok:-29 #spos:37 #ssag:-32 #star:-31 #sten:22 #stio:26 #stop:-44 #swer:-83 #talk:-102 #tall:29 #tati:28
#tele:46 #tell:25 #teng:24 #test:-66 #ther:71 #this:-79 #thur:-24 #tica:24 #ting:-43 #tion:50 #toda:37 #tomo:30
#tter:37 #ttle:29 #type:23 #uand:30 #ueda:32 #uede:47 #uedo:24 #ueme:132 #uenm:47 #ueno:24 #uest:28 #uevo:-22
#uier:30 #uman:57 #unca:-42 #uote:-26 #ursd:-29 #usba:31 #vece:-24 #volv:-27 #want:87 #week:-26 #what:-26 #when:-46
#whoe:80 #will:23 #with:115 #work:24 #woul:55 #wron:-22 #ymor:-25 #your:-33 %again_later:-29
%again_later%call_off:-23 %again_later%lift:-24 %again_later%odometer:66 %again_later%phone:81
%again_later%shift_it:-26 %again_later%start_again:-37 %again_later%who:-48 %again_later%wrong_one:-26 %agree:-60
%agree%bring:-34 %agree%doubt:28 %agree%how_long:24 %agree%leave_me:-46 %agree%machine:43 %agree%odometer:37
%agree%on_way:35 %agree%phone:173 %agree%question:38 %agree%refuse:64 %agree%staff:38 %agree%wrong_one:39 %away:-114
%away%bring:-30 %away%call_off:-85 %away%car:-25 %away%phone:-88 %away%question:-45 %bad%phone:34 %bring:-78
%bring%busy:-23 %bring%call_off:-80 %bring%elsewhere:30 %bring%leave_me:-42 %bring%staff:43 %busy%call_off:-53
%busy%phone:42 %busy%shift_it:-25 %busy%wrong_one:42 %call_off:-67 %call_off%car:32 %call_off%doubt:34
%call_off%elsewhere:29 %call_off%fails:58 %call_off%family:24 %call_off%machine:45 %call_off%meaning:28
%call_off%money:32 %call_off%odometer:-25 %call_off%phone:144 %call_off%place:37 %call_off%staff:52 %call_off%who:-52
%call_off%wrong_one:84 %car:-31 %car%phone:31 %car_part:32 %car_part%do_it:44 %car_part%phone:78 %car_part%staff:37
%do_it:-38 %do_it%phone:39 %do_it%question:-33 %do_it%shift_it:-25 %doubt:38 %doubt%phone:96 %doubt%question:41
%doubt%refuse:37 %elsewhere%phone:68 %fails%phone:65 %fails%question:22 %family%odometer:43 %family%phone:32
%family%refuse:-27 %gone_car:-36 %gone_car%shift_it:24 %gone_car%staff:-25 %gone_car%wrong_one:-28 %how_long:-24
%how_long%phone:57 %how_long%refuse:30 %leave_me:-143 %leave_me%message:-37 %leave_me%phone:-70
%leave_me%wrong_one:-26 %lift:-27 %machine:80 %machine%refuse:58 %machine%staff:86 %machine%wrong_one:27 %meaning:44
%meaning%phone:81 %meaning%refuse:35 %meaning%staff:24 %message:-66 %message%refuse:24 %message%wrong_one:60
%money%phone:99 %money%refuse:58 %money%staff:62 %money%wrong_one:25 %noise:-48 %noise%phone:-35 %noise%question:-39
%odometer%refuse:-22 %odometer%staff:-38 %on_way%phone:66 %pay_day%phone:23 %phone:599 %phone%place:24
%phone%question:143 %phone%refuse:164 %phone%season:-72 %phone%shift_it:179 %phone%smoke_smell:33 %phone%staff:175
%phone%start_again:51 %phone%who:-26 %phone%wrong_one:32 %place:-26 %place%question:-31 %place%refuse:25
%question:-85 %question%refuse:40 %question%shift_it:27 %question%staff:43 %question%wrong_one:-26
%refuse%shift_it:26 %refuse%staff:29 %refuse%start_again:41 %refuse%thanks:-34 %refuse%wrong_one:-40 %season:-103
%smoke_smell:34 %staff:235 %staff%start_again:55 %staff%wrong_one:97 %start_again%who:-31 %thanks:-36 %who:-34
%who%wrong_one:-28 %wrong_one:-136 @after_visit:52 @confirm:-53 @confirm_stop:-30 @day:92 @later:-131 @odometer:29
@reading:-90 @time:52 @times:-60 ^_a:-22 ^_are:-22 ^_call:51 ^_can:86 ^_como:-36 ^_do:-81 ^_este:-48 ^_fine:-27
^_get:41 ^_got:-45 ^_hableme:35 ^_hablenme:-45 ^_have:30 ^_hit:36 ^_how:-45 ^_id:48 ^_ill:-92 ^_im:-24 ^_just:28
^_let:-52 ^_llamame:29 ^_llamenme:56 ^_lo:-22 ^_marca:-33 ^_marqueme:34 ^_me:-48 ^_mejor:32 ^_my:29 ^_need:26
^_never:-33 ^_nobody:-32 ^_nunca:-28 ^_phone:76 ^_please:-27 ^_prefiero:61 ^_puede:23 ^_pueden:65 ^_quien:-27
^_quiero:45 ^_ring:71 ^_se:-32 ^_si:-59 ^_sorry:-36 ^_the:-41 ^_this:-81 ^_we:-31 ^_when:-23 ^_who:44 ^_works:-26
^_would:26 ^_ya:-39 ^_yes:-44 ^_you:-123 a:81 a__and:37 a__back:26 a__can:-25 a__esposa:23 a_call:55 a_few:-33
a_human:43 a_las:-39 a_live:35 a_mi:22 a_person:39 a_ring:43 about:93 about_my:31 about_this:40 al:98 al_rato:42
alguien:57 am:-77 am__talking:-43 am_i:-56 and:124 and__will:34 and_we:29 answer:-84 anymore:-25 appointment:-27
appointment_$:-24 aqui:-23 are:-38 are__talking:-33 are_we:-32 at:36 at_the:23 auto:-23 away_from:-23 back:-22
been:-36 been__to:-38 better:35 brakes:37 brakes_$:31 call:203 call_$:76 call__i:24 call__if:23 call__my:-45
call_back:32 call_it:-27 call_me:303 call_my:70 call_off:-73 called:-64 called__back:-43 called_me:-43 came:-23
can:117 can__pick:-38 can__talk:72 can_i:36 can_you:26 car:-22 cel:-79 cel_$:-28 cell:-23 cell_$:-26 chance_$:39
con:171 con__dueno:28 con_el:62 contesta:-68 could:38 cuando:30 da:-22 days:-24 days_$:-31 did:24 did_my:38 digo:35
do_i:27 do_not:-65 don:30 dont:50 dont__texts:24 dont_do:25 dueno:25 dueno_$:27 echeme:136 el:-29 el_dueno:25
el_telefono:-69 en:-61 en_persona:28 es:-33 es_de:-24 escribir:24 ese:-25 esposa:32 este:-96 este__es:-22
este_cel:-43 este_telefono:-46 esto:30 estoy:22 ever:-40 explica:-35 favor:42 few:-34 fine:-29 fine__me:-30
fine_with:-27 first:-28 first_$:-30 for:-24 found:-23 from_my:-25 gerente:28 get:53 get__a:50 get_a:39 get_me:51
get_my:-39 give:52 give__a:39 give_me:37 going:-22 got:-43 got_to:-44 guys:-61 guys_$:-50 habla:42 hablan:-28
hablar:61 hablar__el:25 hablar_con:60 hableme:113 hableme_para:25 hablenme:-28 have:42 have__phone:27 have__wrong:-28
hear:-24 heard:-38 heard_of:-32 her:-30 hit:37 house:24 how:-36 how__are:-25 human:52 husband:31 i:27 i__do:24
i__it:-36 i__the:-38 i__to:102 i__you:-35 i_dont:83 i_pick:-59 i_speak:52 i_talk:80 i_talking:-43 i_want:68 id:60
id__to:31 id_like:35 id_rather:24 if:54 if_you:26 ill:-90 ill__you:-44 ill_call:-88 im:-56 im__a:-42 im_in:-32 in:-82
in_a:-47 in_july:-34 ingles:-26 is:-28 is_it:-22 is_this:-26 isnt:-24 it:-25 it_off:-32 july:-35 july_$:-35 just:28
just__me:39 just__this:-23 just_call:36 la__por:-25 last:-27 later:-31 later_$:-33 le:27 let:-54 let_me:-62 like:29
like_a:23 like_to:27 line:59 line_$:48 live:33 live_person:29 llamada:39 llamada_$:38 llamame:46 llamen:22
llamenme:157 llamenme_$:39 lo:-44 lo_que:-23 manager:50 manager_$:26 marca:39 marca_$:-24 marcar:22 marqueme:113
marquenme:48 me:199 me_$:26 me__a:-29 me__al:52 me__marcar:22 me__por:101 me__ring:35 me__to:-23 me__un:-22 me__we:41
me__you:47 me_a:60 me_about:22 me_and:47 me_back:-44 me_da:-22 me_explica:-35 me_habla:46 me_i:48 me_if:26 me_in:-39
me_lo:-29 me_marca:89 me_please:55 me_when:40 me_with:60 meeting:-27 mejor:89 mi:-47 mi_esposa:32 mi_telefono:-32
morning:-62 my:30 my__number:32 my_appointment:-32 my_brakes:44 my_cell:-31 my_husband:31 my_phone:-82 my_work:36
nadie:-48 necesito:32 necesito__con:24 need:35 need_to:26 never:-117 never__of:-32 never_heard:-32 new:-40
new_phone:-25 ni:-36 no:-42 no_$:-35 no_es:-22 nobody:-42 not:-100 now:-28 now_$:-26 nunca:-42 nunca_me:-32 of:-33
off:-129 off__appointment:-47 off_my:-55 ok:-23 on:69 on__phone:28 on_the:60 or:-77 out:25 over:63 over__phone:55
over_the:58 para:74 paseme:35 people:-58 pero:66 person:53 person_$:28 phone_$:-97 phone__and:27 phone__to:-22
phone_anymore:-22 phone_me:216 phone_my:30 pick:-97 pick__up:-45 pick_it:-29 please:67 please__me:31 please_phone:41
please_remove:-24 please_ring:22 pongame:38 por:140 por_favor:45 por_telefono:93 precio:-23 prefiero:78 pueden:65
put:22 que__llame:26 que_me:38 quien:-46 quien_me:-26 quiero:63 quiero__con:51 quiero_hablar:24 quote:-26 rather:56
rato:34 rato_$:38 ready:-45 ready_$:-44 remove:-33 reply:-23 right_now:-29 ring:249 ring_me:144 schedule_$:-26
se_me:-22 second:-27 second_$:-23 semanas:-67 semanas_$:-67 send:-28 si:-28 si__favor:-46 si_por:-46 so__can:28
so_we:22 somebody:35 someone:38 someone_$:26 someone__me:25 sorry:-43 sorry_i:-27 sort:24 soy:-29 speak:111
speak_to:91 speak_with:30 stop:-38 su:-26 talk__my:-39 talk__the:22 talk_to:30 talking:-91 talking_$:-30
talking_to:-43 tel:46 telefono:-72 telefono_$:-42 telephone:73 telephone_me:48 tell:26 tengo:27 text:-37 text_$:-45
text_me:-31 thanks:-22 the:72 the__call:31 the_house:24 the_manager:31 the_phone:26 the_second:-23 the_wrong:-30
this:-79 this_$:29 this_is:-30 this_isnt:-36 this_phone:-83 thursday:-29 thursday_$:-26 to__in:-29 to__it:34
to__me:26 to__off:-33 to__this:48 to__to:25 to__wife:-39 to__you:-47 to_about:59 to_call:-55 to_me:-77 to_my:-78
to_speak:57 tomorrow:27 type:23 un:119 una:68 una_llamada:23 up:-55 up_$:-33 veces:-24 want:75 want_a:32 want_to:35
was:-31 we:-33 we_can:22 we_have:-31 we_talking:-33 what:-23 when:-43 when__get:44 when__i:-23 when_i:-33 when_im:-43
when_you:54 who:38 who__i:55 who_am:-42 who_can:57 whoever:69 will__it:26 with:116 with_me:-28 with_someone:54
work:47 works:-28 would:55 wrong:-22 y:103 ya:-63 yes:-50 you:-223 you__a:38 you__im:-49 you__the:-22 you_call:52
you_guys:-58 you_have:-32 you_people:-62 you_when:-43 your:-29
"""
