"""What speaks for and against `call`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "call"
BIAS = -176
WEIGHTS = """\
#abla:102 #able:163 #abou:105 #acue:25 #adie:-38 #adit:44 #agen:55 #ager:46 #akes:36 #akin:-34 #algu:82 #alke:-39
#alki:-114 #alle:-63 #amad:79 #amam:53 #aman:41 #amar:60 #amen:205 #amos:34 #anag:46 #anas:-79 #anda:-40 #ando:59
#anin:-56 #answ:-109 #anym:-25 #arca:300 #aren:-31 #arle:34 #arme:84 #aron:-109 #arqu:195 #arre:27 #asam:35 #asem:34
#asie:37 #ater:-43 #athe:60 #ator:31 #auto:-38 #avor:39 #band:36 #been:-46 #belo:-26 #bett:43 #bill:26 #blan:-37
#blar:92 #blem:154 #blow:-30 #bout:105 #brak:39 #call:211 #came:146 #canc:-35 #cant:35 #celu:-25 #cesi:30 #chan:35
#chem:147 #cked:-25 #comp:-26 #comu:29 #cond:-25 #cont:-87 #coul:42 #cuan:41 #days:-29 #dial:26 #dier:-27 #digo:42
#disc:40 #dita:44 #does:-25 #dont:72 #duen:28 #eady:-41 #eaki:-26 #eani:-56 #eard:-44 #ease:67 #easi:36 #ebod:41
#echa:57 #eche:147 #ecio:-27 #eden:58 #eeti:-28 #efer:30 #efie:85 #efon:-26 #egla:29 #ejor:92 #elef:-26 #elep:82
#else:-50 #elul:-25 #eman:-83 #emos:36 #emov:-35 #engo:46 #enme:218 #enor:-40 #enta:25 #eone:42 #eopl:-67 #epho:82
#eply:-33 #erat:42 #eron:-92 #erso:61 #esen:30 #esit:30 #espo:60 #essa:-30 #esta:-84 #este:-119 #esto:58 #etin:-28
#ette:49 #ever:-115 #expl:27 #favo:39 #fier:85 #fine:-26 #fona:168 #fono:-83 #game:59 #gent:51 #gere:34 #give:58
#gles:-32 #guie:49 #guys:-73 #habl:271 #hand:28 #hank:-26 #have:63 #hear:-89 #heme:147 #hese:34 #hoev:86 #hone:106
#houg:28 #hous:35 #hrou:25 #huma:69 #hurs:-31 #husb:36 #icar:59 #icke:-26 #iend:28 #iero:73 #ions:27 #iscu:41
#isnt:-29 #july:-38 #just:49 #kind:25 #king:-146 #know:44 #lama:244 #lame:230 #larl:25 #last:-30 #late:-50 #leas:67
#lefo:-26 #leme:128 #lenm:-27 #leph:82 #lgui:71 #like:29 #line:107 #live:41 #lked:-40 #lkin:-114 #llam:479 #lled:-72
#long:-35 #lses:-28 #lula:-25 #mada:28 #madi:44 #mame:53 #mand:-33 #marc:298 #marm:76 #marq:195 #mbre:26 #mean:-56
#mebo:41 #meet:-30 #mejo:92 #menm:185 #ment:-34 #meon:42 #mess:-36 #more:-27 #morr:26 #move:-46 #muni:27 #nadi:-38
#nage:46 #nana:26 #nazo:168 #ncel:-26 #nece:28 #need:51 #neve:-127 #nfir:27 #ngam:38 #ning:-46 #nobo:-49 #nows:28
#nswe:-109 #ntes:-78 #nunc:-55 #nymo:-25 #obod:-49 #obra:-25 #oeve:86 #oing:-27 #omeb:41 #omeo:42 #omor:26 #omun:29
#onaz:168 #onea:34 #onfi:27 #onga:33 #only:-29 #onte:-90 #oper:41 #ople:-67 #orks:-32 #orro:26 #orry:-59 #ough:48
#ould:94 #ouse:38 #over:55 #para:63 #pase:32 #peak:94 #peop:-67 #pera:39 #pero:60 #pers:60 #phon:131 #pick:-152
#plat:30 #plea:70 #poke:-31 #pong:35 #posa:35 #pref:116 #pued:103 #punt:-25 #quem:142 #quen:66 #quit:-51 #quot:-26
#rake:39 #rath:62 #rato:80 #rcan:60 #rdon:-29 #reci:-32 #refe:30 #refi:85 #regl:32 #remo:-36 #rent:26 #repl:-29
#rese:26 #ribe:-26 #righ:-28 #ring:302 #rque:202 #rreg:33 #rrow:26 #rsda:-25 #rson:61 #same:32 #sban:36 #sday:-25
#seco:-25 #sema:-83 #seme:34 #send:-38 #seno:-40 #sier:51 #sigu:-26 #sito:31 #some:54 #sorr:-59 #spea:94 #spok:-31
#spos:54 #ssag:-36 #star:-35 #stio:27 #stop:-43 #stoy:29 #swer:-109 #take:-32 #talk:-132 #tall:30 #tati:29 #tele:57
#tell:33 #teng:35 #test:-92 #that:-26 #ther:81 #thes:34 #this:-73 #tien:25 #ting:-38 #tion:51 #toda:37 #tomo:26
#tras:29 #tter:43 #ttle:27 #type:26 #uand:31 #ueda:31 #uede:40 #uedo:30 #ueme:148 #uenm:54 #uest:31 #uier:46 #uman:69
#unca:-54 #uote:-26 #ursd:-25 #usba:36 #volv:-31 #vuel:26 #want:95 #week:-30 #what:-34 #when:-49 #whoe:86 #with:124
#work:35 #woul:54 #ymor:-25 #your:-41 %again_later%bad:-28 %again_later%lift:-28 %again_later%odometer:69
%again_later%phone:72 %again_later%shift_it:-34 %again_later%staff:-55 %again_later%start_again:-32
%again_later%who:-57 %again_later%wrong_one:-30 %agree:-75 %agree%bring:-45 %agree%car:25 %agree%doubt:25
%agree%how_long:27 %agree%leave_me:-50 %agree%machine:49 %agree%meaning:-41 %agree%odometer:30 %agree%on_way:39
%agree%phone:188 %agree%refuse:78 %agree%wrong_one:39 %away:-98 %away%bring:-25 %away%call_off:-62 %away%car:-26
%away%fails:25 %away%phone:-78 %away%question:-48 %bad:-25 %bad%phone:32 %bring:-87 %bring%busy:-26
%bring%call_off:-79 %bring%do_it:26 %bring%elsewhere:43 %bring%leave_me:-50 %bring%staff:49 %busy%call_off:-62
%busy%phone:37 %busy%wrong_one:39 %call_off:-63 %call_off%car:40 %call_off%doubt:34 %call_off%elsewhere:34
%call_off%fails:72 %call_off%family:25 %call_off%machine:78 %call_off%message:28 %call_off%odometer:-30
%call_off%phone:149 %call_off%place:54 %call_off%question:27 %call_off%staff:36 %call_off%who:-42
%call_off%wrong_one:128 %car%family:26 %car%odometer:32 %car%phone:45 %car_part%do_it:47 %car_part%phone:96
%car_part%staff:38 %car_part%wrong_one:33 %do_it:-40 %do_it%phone:45 %do_it%question:-38 %do_it%shift_it:-41
%doubt:42 %doubt%phone:110 %doubt%question:38 %doubt%refuse:37 %elsewhere%phone:81 %elsewhere%wrong_one:-28
%fails%how_long:25 %fails%phone:88 %fails%question:29 %fails%refuse:32 %fails%start_again:29 %family%odometer:57
%family%phone:30 %family%shift_it:25 %gone_car%staff:-34 %how_long%phone:84 %how_long%refuse:51 %leave_me:-183
%leave_me%message:-51 %leave_me%odometer:-28 %leave_me%phone:-101 %leave_me%wrong_one:-32 %lift:-33 %machine:92
%machine%refuse:76 %machine%staff:101 %machine%start_again:33 %machine%wrong_one:46 %meaning%phone:45
%meaning%refuse:41 %meaning%staff:-32 %message:-69 %message%refuse:46 %message%wrong_one:70 %money%phone:101
%money%refuse:67 %money%staff:70 %money%wrong_one:28 %noise:-64 %noise%phone:-48 %noise%question:-41
%odometer%staff:-43 %on_way%phone:72 %pay_day:-27 %phone:635 %phone%place:51 %phone%question:177 %phone%refuse:173
%phone%season:-81 %phone%shift_it:193 %phone%smoke_smell:37 %phone%staff:174 %phone%start_again:52 %phone%who:-38
%phone%wrong_one:48 %place%refuse:28 %question:-100 %question%refuse:73 %question%staff:36 %refuse%shift_it:29
%refuse%start_again:52 %refuse%thanks:-37 %refuse%wrong_one:-30 %season:-119 %shift_it%staff:-38 %smoke_smell:37
%staff:219 %staff%start_again:64 %staff%wrong_one:112 %start_again%who:-33 %thanks:-42 %who:-41 %who%wrong_one:-37
%wrong_one:-124 @?:25 @after_visit:44 @car:30 @confirm:-72 @confirm_stop:-39 @day:86 @later:-108 @odometer:29
@offers:-33 @reading:-115 @time:29 @times:-47 ^_a:-31 ^_are:-30 ^_call:48 ^_can:100 ^_como:-40 ^_deme:29 ^_do:-85
^_el:-30 ^_este:-53 ^_fine:-33 ^_get:53 ^_got:-56 ^_hablan:-36 ^_hableme:32 ^_hablenme:-51 ^_have:31 ^_hit:56
^_how:-52 ^_id:55 ^_ill:-97 ^_im:-25 ^_it:26 ^_just:32 ^_let:-53 ^_llamame:29 ^_llamenme:57 ^_marca:-42 ^_marqueme:38
^_me:-72 ^_mejor:27 ^_my:49 ^_nadie:-50 ^_need:30 ^_never:-38 ^_new:-29 ^_nobody:-35 ^_nunca:-37 ^_phone:92
^_please:-36 ^_prefiero:69 ^_pueden:67 ^_put:30 ^_quien:-27 ^_quiero:53 ^_ring:83 ^_se:-35 ^_si:-67 ^_sorry:-42
^_the:-49 ^_this:-96 ^_we:-34 ^_when:-26 ^_who:55 ^_works:-30 ^_would:28 ^_ya:-51 ^_yes:-62 ^_you:-136 a:67 a__and:36
a__back:27 a__can:-27 a__esposa:26 a__on:26 a_call:59 a_few:-37 a_human:57 a_las:-59 a_live:39 a_meeting:-28 a_mi:36
a_person:44 a_ring:47 about:105 about_my:38 about_this:51 acuerdo:25 acuerdo_$:25 al:99 al_rato:49 alguien:71
alguien_$:36 am:-96 am__talking:-48 am_i:-70 and:138 and__want:26 and__will:34 and_we:29 answer:-98 anymore:-25
anymore_$:-25 are:-31 are__talking:-45 are_we:-44 at_the:37 auto:-35 been:-46 been__to:-48 better:43 brakes:42
brakes_$:30 call:221 call_$:97 call__my:-42 call__off:-29 call_back:34 call_it:-42 call_me:338 call_my:78
call_off:-85 called:-79 called__back:-46 called_me:-46 can:139 can__pick:-43 can__talk:84 can_i:46 can_you:32 cant:36
cel:-101 cel_$:-31 cell_$:-36 celular:-25 chance_$:33 con:177 con__dueno:35 con_alguien:33 con_el:71 contesta:-84
could:38 cuando:31 days_$:-30 de_acuerdo:25 de_las:27 deme:31 despues__las:27 despues_de:26 did:29 did__brakes:39
did_my:39 digo:42 do_i:27 do_not:-75 do_this:26 don:31 dont:72 dont_do:30 dont_text:25 dueno:29 easier:36
easier__you:25 easier_if:27 echeme:147 el:-33 el_dueno:36 el_telefono:-86 elses:-28 en:-62 en_la:29 en_persona:31
es:-47 es_de:-27 escribir:26 ese:-31 esposa:35 este:-122 este__es:-27 este_cel:-55 este_telefono:-51 esto:28 estoy:31
estoy__el:26 estoy_en:25 ever:-43 explica:-31 favor:39 few:-38 fine:-26 fine__me:-35 fine_with:-29 first_$:-29
for:-29 for_me:-28 from_my:-29 gerente:34 get:74 get__a:51 get_a:57 get_me:52 get_my:-49 give:61 give__a:41
give_me:35 got:-37 got_to:-46 guy:-28 guys:-73 guys_$:-60 habla:43 hablan:-28 hablar:70 hablar__el:31 hablar_con:70
hable:30 hableme:130 hableme_para:33 hablenme:-26 have:64 have__phone:29 have__wrong:-31 he:27 hear:-42 heard:-46
heard_of:-37 her:-41 hit:56 house:39 how:-37 how__are:-29 human:63 husband:36 i:33 i__do:35 i__it:-33 i__the:-33
i__to:107 i__you:-44 i_dont:91 i_hear:-27 i_pick:-67 i_speak:56 i_talk:93 i_talking:-48 i_want:70 id:67 id__to:35
id_like:38 id_rather:26 if:88 if__is:25 if_you:58 ill:-89 ill__you:-47 ill_call:-95 im:-71 im__a:-44 im_in:-35
im_ready:-47 in:-79 in_a:-44 in_july:-38 in_the:-25 ingles:-32 is_this:-27 isnt:-29 it_is:32 it_off:-42 july:-38
july_$:-38 just:49 just__me:58 just__this:-27 just_call:37 just_phone:30 knows:28 la__por:-27 last:-34 later:-38
later_$:-35 le:38 let:-57 let__talk:-31 let_me:-61 like:32 like_to:29 line:84 line_$:50 live:37 live_person:33
llamada:34 llamada_$:38 llamame:53 llaman:41 llamar:26 llamen:28 llamenme:185 llamenme_$:52 lo:-53 lo_que:-28 los:26
manager:46 manager_$:28 manana:27 marca:45 marca_$:-27 marqueme:127 marqueme_$:27 marquenme:55 me:212 me_$:35
me__a:-40 me__al:47 me__la:-28 me__por:101 me__ring:40 me__we:49 me__you:41 me_a:58 me_about:37 me_and:56 me_back:-26
me_da:-25 me_explica:-40 me_first:26 me_habla:49 me_hable:30 me_i:65 me_if:29 me_in:-51 me_lo:-37 me_marca:108
me_please:60 me_so:33 me_talk:-31 me_when:42 me_with:75 meaning:-56 meeting:-28 mejor:92 mi:-46 mi_esposa:35
mi_telefono:-44 my:68 my__are:31 my__first:-41 my__number:30 my_appointment:-29 my_brakes:46 my_husband:37
my_phone:-113 my_work:54 nadie:-38 necesito:32 necesito__con:25 need:46 need_to:27 never:-124 never__of:-37
never_heard:-37 new:-59 new_phone:-40 ni:-40 no:-48 no_$:-46 no_es:-27 no_le:25 no_soy:-28 nobody:-49 not:-118
now_$:-25 nunca:-54 nunca_me:-43 o:-27 of:-41 off:-174 off_$:-42 off__appointment:-50 off_my:-62 on:75 on__phone:26
on_the:99 only:-29 or:-93 out:31 over:64 over__phone:58 over_the:61 para:69 pasame:35 paseme:36 people:-67 pero:64
person:57 person_$:35 phone_$:-113 phone__and:33 phone__at:-26 phone__when:32 phone_anymore:-26 phone_me:308
phone_my:30 pick:-130 pick__up:-51 pick_it:-34 please:74 please_$:30 please__me:27 please_phone:40 please_remove:-26
pongame:41 por:152 por__mejor:31 por_favor:36 por_telefono:122 precio:-26 prefer:30 prefiero:86 pueden:58 puedo:29
put:34 que__hable:27 que__llame:28 que__me:-26 que_me:37 quien:-57 quien_me:-29 quiero:79 quiero__con:54
quiero_hablar:26 quote:-26 rather:62 rato:42 rato_$:47 ready:-49 ready_$:-48 remove:-35 reply:-33 right:-25
right_now:-33 ring:327 ring_me:205 schedule_$:-28 se_me:-32 second:-25 semanas:-79 semanas_$:-78 send:-35 send_me:-25
set:29 set__up:29 set_it:30 si:-41 si__favor:-51 si_por:-51 so__can:26 so_we:29 somebody:41 someone:43 someone_$:29
someone__me:28 sorry:-59 sorry_i:-32 soy:-39 speak:119 speak_to:97 speak_with:35 stop:-44 su:-30 take:-25
talk__me:-38 talk__my:-42 talk__the:28 talk_to:44 talked:-40 talking:-114 talking_$:-37 talking_to:-48 tel:51
telefono:-83 telefono_$:-39 telephone:82 telephone_me:49 tell:35 tengo:35 text:-33 text_$:-56 text_me:-37 thanks:-25
that:-26 the:77 the__call:33 the_house:39 the_manager:34 the_phone:29 the_whole:-25 the_wrong:-27 these:34 this:-73
this_$:42 this_is:-28 this_isnt:-41 this_phone:-115 though:26 through:25 thursday:-25 thursday_$:-30 to:46 to__in:-32
to__it:41 to__me:33 to__off:-41 to__this:55 to__to:27 to__wife:-41 to__you:-57 to_about:66 to_call:-75 to_me:-91
to_my:-87 to_set:30 to_somebody:25 to_speak:61 too:32 try:61 type:26 un:141 una:79 up:-70 up_$:-41 want:85 want_a:35
want_to:31 was:-31 way:-30 we:-46 we_have:-33 we_talking:-45 when:-46 when__get:50 when__i:-26 when_i:-40 when_im:-52
when_you:64 who:58 who__i:58 who_am:-52 who_can:68 whoever:73 will__it:26 with:125 with_a:26 with_me:-30
with_someone:59 work:62 works:-32 would:55 y:137 y_me:-37 ya:-76 yes:-67 you:-215 you__a:50 you__im:-53 you__the:-29
you_call:56 you_guys:-70 you_people:-71 you_when:-47 your:-35
"""
