"""What speaks for and against `call`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "call"
BIAS = -151
WEIGHTS = """\
#abla:81 #able:112 #abou:71 #adie:-32 #adit:18 #agen:42 #ager:42 #akes:23 #akin:-20 #algu:54 #alki:-69 #alle:-37
#amad:50 #amam:40 #aman:24 #amar:41 #amen:147 #amos:23 #anag:42 #anas:-44 #ando:37 #answ:-60 #anym:-20 #arca:187
#aren:-21 #arle:22 #arme:59 #aron:-71 #arqu:137 #arre:19 #asem:26 #ater:-24 #athe:41 #ator:24 #auto:-24 #avor:47
#band:22 #been:-24 #belo:-19 #bett:26 #bill:19 #blan:-21 #blar:72 #blem:106 #blow:-21 #bout:70 #brak:24 #call:192
#came:82 #canc:-25 #cesi:25 #chan:29 #chem:97 #cier:-19 #comu:22 #cond:-19 #conf:18 #cont:-44 #coul:33 #cuan:30
#days:-20 #digo:29 #disc:25 #dita:18 #dont:31 #duen:19 #eady:-30 #eard:-28 #ease:50 #ebod:28 #echa:30 #eche:98
#econ:-18 #eden:50 #eeti:-18 #efie:61 #egla:20 #ejor:77 #elep:58 #else:-33 #eman:-49 #emov:-26 #engo:23 #enme:161
#enor:-27 #ente:23 #eone:32 #eopl:-39 #epho:58 #erat:31 #eron:-63 #erso:45 #esen:23 #esit:25 #espo:34 #essa:-23
#esta:-54 #este:-69 #esti:18 #esto:40 #etin:-18 #ette:31 #ever:-65 #favo:47 #fier:61 #fine:-21 #firs:-19 #fona:106
#fono:-53 #foun:-18 #game:24 #gent:45 #gere:24 #give:45 #gles:-20 #goin:-19 #guie:33 #guys:-45 #habl:203 #hank:-19
#have:38 #hear:-48 #heme:98 #hoev:60 #hone:73 #huma:44 #hurs:-25 #husb:22 #icar:46 #iend:18 #iero:54 #ique:18
#irst:-19 #iscu:26 #isnt:-18 #ivin:18 #july:-22 #just:20 #kind:19 #king:-86 #know:23 #lama:158 #lame:152 #larl:20
#last:-20 #late:-31 #leas:50 #leme:88 #leph:58 #lgui:46 #line:57 #live:30 #lkin:-69 #llam:317 #lled:-46 #long:-23
#mada:31 #mame:39 #marc:188 #marm:49 #marq:137 #mebo:28 #meet:-19 #mejo:77 #menm:133 #ment:-26 #meon:32 #mess:-28
#more:-18 #morn:-45 #morr:24 #move:-31 #muni:20 #nadi:-32 #nage:42 #nazo:106 #ncel:-18 #nece:24 #need:31 #neve:-88
#nfir:19 #ngam:28 #ning:-40 #nobo:-32 #nswe:-60 #ntes:-36 #nunc:-31 #nymo:-20 #obod:-32 #oeve:60 #oing:-22 #omeb:28
#omeo:32 #omor:24 #omun:22 #onaz:106 #onea:26 #onfi:19 #onga:27 #onte:-47 #oper:31 #ople:-39 #orks:-18 #orni:-45
#orro:24 #orry:-33 #ough:20 #ould:69 #ouse:18 #over:41 #para:57 #pase:25 #peak:71 #peop:-39 #pera:31 #pero:50
#pers:43 #phon:75 #pick:-87 #plat:23 #plea:53 #poke:-23 #pong:28 #posa:25 #pref:75 #pued:88 #quem:102 #quen:43
#ques:20 #quit:-28 #quot:-19 #rake:24 #rath:42 #rato:55 #rcar:18 #read:-20 #reci:-18 #refi:61 #regl:22 #remo:-26
#rese:20 #ring:179 #rnin:-37 #rong:-18 #rque:144 #rreg:23 #rrow:24 #rsda:-22 #rson:45 #sage:-18 #sban:22 #seco:-19
#sema:-49 #seme:26 #send:-24 #seno:-27 #sier:23 #sito:26 #some:44 #sorr:-33 #spea:71 #spok:-23 #spos:30 #ssag:-27
#star:-26 #stio:21 #stop:-37 #swer:-60 #talk:-68 #tall:23 #tati:22 #tele:41 #tell:19 #teng:19 #test:-48 #ther:51
#this:-67 #thur:-18 #tica:19 #ting:-35 #tion:39 #toda:29 #tomo:24 #tter:27 #ttle:22 #type:18 #uand:25 #ueda:27
#uede:48 #uedo:18 #ueme:105 #uenm:37 #ueno:20 #uest:22 #uier:30 #uman:44 #unca:-31 #uote:-19 #ursd:-22 #usba:22
#vece:-19 #volv:-21 #wait:-18 #want:70 #week:-21 #what:-24 #when:-33 #whoe:60 #with:86 #work:18 #woul:38 #wron:-18
#ymor:-20 #your:-28 %again_later:-31 %again_later%call_off:-18 %again_later%lift:-21 %again_later%odometer:47
%again_later%phone:68 %again_later%shift_it:-18 %again_later%start_again:-32 %again_later%who:-35
%again_later%wrong_one:-22 %agree:-39 %agree%bring:-28 %agree%doubt:20 %agree%leave_me:-36 %agree%machine:35
%agree%odometer:29 %agree%on_way:26 %agree%phone:146 %agree%question:27 %agree%refuse:45 %agree%staff:37
%agree%wrong_one:31 %away:-88 %away%bring:-22 %away%call_off:-62 %away%car:-19 %away%phone:-63 %away%question:-33
%bad%phone:27 %bring:-68 %bring%call_off:-65 %bring%elsewhere:23 %bring%leave_me:-35 %bring%staff:34
%busy%call_off:-37 %busy%phone:34 %busy%wrong_one:28 %call_off:-61 %call_off%car:23 %call_off%doubt:26
%call_off%elsewhere:23 %call_off%fails:45 %call_off%machine:36 %call_off%meaning:22 %call_off%money:23
%call_off%odometer:-22 %call_off%phone:140 %call_off%place:28 %call_off%refuse:-28 %call_off%staff:53
%call_off%start_again:-18 %call_off%who:-39 %call_off%wrong_one:60 %car:-30 %car%phone:26 %car_part%do_it:31
%car_part%phone:60 %car_part%staff:29 %do_it:-42 %do_it%phone:27 %do_it%question:-28 %do_it%shift_it:-21 %doubt:27
%doubt%phone:77 %doubt%question:33 %doubt%refuse:28 %elsewhere%phone:56 %elsewhere%staff:19 %fails%phone:51
%family%odometer:35 %family%phone:22 %family%refuse:-23 %gone_car:-33 %gone_car%shift_it:19 %gone_car%staff:-19
%gone_car%wrong_one:-22 %how_long:-21 %how_long%phone:46 %how_long%refuse:22 %leave_me:-119 %leave_me%message:-31
%leave_me%phone:-56 %leave_me%wrong_one:-22 %lift:-23 %machine:63 %machine%refuse:47 %machine%staff:69
%machine%wrong_one:24 %meaning:33 %meaning%phone:64 %meaning%refuse:26 %meaning%staff:20 %message:-58
%message%wrong_one:39 %money%phone:78 %money%refuse:43 %money%staff:51 %money%wrong_one:21 %noise:-39
%noise%phone:-26 %noise%question:-29 %odometer%refuse:-19 %odometer%staff:-29 %on_way%phone:51 %pay_day%phone:18
%phone:571 %phone%place:20 %phone%question:132 %phone%refuse:141 %phone%season:-50 %phone%shift_it:151
%phone%smoke_smell:26 %phone%staff:176 %phone%start_again:45 %phone%who:-23 %phone%wrong_one:37 %place:-23
%place%question:-27 %place%refuse:19 %question:-66 %question%refuse:30 %question%shift_it:24 %question%staff:39
%question%wrong_one:-20 %refuse:-30 %refuse%shift_it:21 %refuse%staff:35 %refuse%start_again:34 %refuse%thanks:-30
%refuse%wrong_one:-32 %season:-79 %smoke_smell:24 %staff:216 %staff%start_again:47 %staff%wrong_one:89
%start_again%who:-21 %thanks:-35 %who:-31 %who%wrong_one:-23 %wrong_one:-112 @after_visit:38 @confirm:-39
@confirm_stop:-26 @day:64 @later:-101 @odometer:18 @reading:-67 @time:39 @times:-38 ^_call:42 ^_can:67 ^_como:-27
^_do:-58 ^_este:-36 ^_fine:-20 ^_get:30 ^_got:-33 ^_hableme:28 ^_hablenme:-29 ^_have:26 ^_hit:28 ^_how:-36 ^_id:37
^_ill:-67 ^_just:21 ^_let:-39 ^_llamame:25 ^_llamenme:48 ^_lo:-18 ^_marca:-21 ^_marqueme:27 ^_mejor:29 ^_my:21
^_need:21 ^_never:-26 ^_nobody:-24 ^_nunca:-19 ^_phone:58 ^_please:-18 ^_prefiero:47 ^_pueden:48 ^_quien:-19
^_quiero:38 ^_ring:52 ^_se:-23 ^_si:-35 ^_sorry:-26 ^_the:-35 ^_this:-61 ^_we:-21 ^_who:30 ^_ya:-34 ^_yes:-34
^_you:-91 a:73 a__and:29 a__back:18 a__esposa:20 a_call:42 a_few:-23 a_human:32 a_las:-25 a_live:28 a_mi:19
a_person:32 a_ring:34 about:71 about_my:24 about_this:28 al:76 al_rato:31 alguien:46 am:-57 am__talking:-31 am_i:-42
and:92 and__will:27 and_we:23 answer:-60 anymore:-20 appointment:-19 aqui:-18 are:-32 are__talking:-26 are_we:-25
at:24 at_the:18 back:-19 been:-24 been__to:-25 better:26 brakes:26 brakes_$:22 call:183 call_$:59 call__if:18
call__my:-33 call_back:23 call_it:-23 call_me:246 call_my:49 call_off:-54 called:-49 called__back:-31 called_me:-31
came:-18 can:93 can__pick:-28 can__talk:53 can_i:31 car:-19 cel:-62 cel_$:-22 chance_$:27 con:141 con__dueno:23
con_el:52 contesta:-48 could:30 cuando:25 days_$:-22 did_my:27 digo:29 do:-18 do_i:18 do_not:-44 don:24 dont:31
dont_do:18 dueno:20 dueno_$:22 echeme:98 el_dueno:21 el_telefono:-49 en:-45 en_persona:23 es:-26 escribir:20 ese:-21
esposa:25 este:-74 este_cel:-33 este_telefono:-35 esto:24 ever:-30 explica:-23 favor:47 few:-24 fine:-21 fine__me:-21
fine_with:-19 first:-19 first_$:-21 for:-24 found:-18 from_my:-18 gerente:24 get:39 get__a:37 get_a:27 get_me:38
get_my:-27 give:45 give__a:36 give_me:33 going:-19 got:-33 got_to:-31 guys:-45 guys_$:-35 habla:30 hablan:-22
hablar:54 hablar__el:21 hablar_con:52 hableme:89 hableme_para:20 have:38 have__phone:22 have__wrong:-21 heard:-30
heard_of:-25 her:-24 hit:29 house:19 how:-31 how__are:-19 human:40 husband:22 i__it:-27 i__the:-27 i__to:79
i__you:-25 i_dont:58 i_pick:-42 i_speak:39 i_talk:60 i_talking:-31 i_want:55 id:46 id__to:21 id_like:25 id_rather:21
if:42 if_you:21 ill:-66 ill__you:-31 ill_call:-62 im:-41 im__a:-31 im_in:-22 in:-64 in_a:-32 in_july:-22 ingles:-19
is:-31 is_it:-20 is_this:-19 isnt:-18 it:-32 it_off:-27 july:-22 july_$:-22 just:20 just__me:31 just__this:-18
just_call:26 la__por:-18 last:-23 later:-21 later_$:-23 le:19 let:-41 let_me:-47 like:18 like_a:18 like_to:18 line:46
line_$:38 live:26 live_person:23 llamada:34 llamada_$:32 llamame:40 llamen:19 llamenme:133 llamenme_$:33 lo:-38
lo_que:-18 manager:42 manager_$:21 marca:32 marcar:19 marqueme:89 marquenme:37 me:206 me_$:32 me__a:-23 me__al:36
me__marcar:19 me__por:71 me__ring:28 me__we:33 me__you:35 me_a:50 me_about:20 me_and:37 me_back:-32 me_explica:-23
me_habla:34 me_i:35 me_if:20 me_in:-28 me_llame:19 me_lo:-24 me_marca:66 me_please:46 me_when:29 me_with:41
meeting:-18 mejor:78 mi:-34 mi_esposa:26 mi_telefono:-23 morning:-45 my__number:20 my_appointment:-23 my_brakes:32
my_cell:-20 my_husband:22 my_phone:-65 my_work:24 nadie:-32 necesito:26 necesito__con:20 need:27 need_to:21 never:-85
never__of:-25 never_heard:-25 new:-34 new_phone:-20 ni:-30 no:-51 no_$:-28 nobody:-32 not:-73 now:-22 now_$:-19
nunca:-31 nunca_me:-22 of:-29 off:-102 off__appointment:-34 off_my:-41 ok:-21 on:49 on__phone:21 on_the:46 or:-55
over:45 over__phone:39 over_the:42 para:62 paseme:28 people:-39 pero:52 person:45 person_$:24 phone_$:-70
phone__and:22 phone_anymore:-18 phone_me:171 phone_my:23 pick:-74 pick__up:-33 pick_it:-21 please:57 please__me:24
please_have:18 please_phone:32 please_remove:-18 pongame:30 por:119 por_favor:49 por_telefono:69 prefiero:61
pueden:50 que__llame:23 que_me:37 quien:-33 quien_me:-18 quiero:52 quiero__con:43 quiero_hablar:21 quote:-19
rather:42 rato:25 rato_$:28 ready:-32 ready_$:-31 remove:-25 right_now:-20 ring:196 ring_me:117 schedule_$:-19
second:-19 semanas:-46 semanas_$:-46 send:-22 si__favor:-27 si_por:-27 so__can:22 somebody:28 someone:32 someone_$:19
someone__me:22 sorry:-33 sorry_i:-19 sort:19 soy:-25 speak:84 speak_to:67 speak_with:25 stop:-32 su:-21 talk:20
talk__a:18 talk__my:-25 talk__the:18 talk_to:33 talking:-69 talking_$:-23 talking_to:-31 tel:37 telefono:-53
telefono_$:-30 telephone:58 telephone_me:38 tell:20 tengo:21 text:-25 text_$:-28 text_me:-24 thanks:-19 the:49
the__call:26 the_house:19 the_manager:26 the_phone:23 the_wrong:-24 this:-67 this_$:18 this_is:-24 this_isnt:-27
this_phone:-66 thursday:-22 thursday_$:-20 to__in:-18 to__it:25 to__me:19 to__off:-24 to__this:34 to__to:19
to__wife:-25 to__you:-32 to_about:43 to_call:-38 to_me:-57 to_my:-56 to_speak:43 tomorrow:21 type:18 un:88 una:57
una_llamada:20 up:-44 up_$:-26 veces:-19 want:60 want_a:25 want_to:29 was:-26 we:-23 we_have:-20 we_talking:-26
what:-22 when:-31 when__get:31 when_i:-26 when_im:-31 when_you:40 who:25 who__i:40 who_am:-31 who_can:42 whoever:51
will__it:21 with:87 with_me:-20 with_someone:36 work:32 works:-18 would:39 wrong:-18 y:82 ya:-57 yes:-39 you:-172
you__a:26 you__im:-35 you_call:37 you_guys:-42 you_have:-25 you_people:-42 you_when:-31 your:-23
"""
