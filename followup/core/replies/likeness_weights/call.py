"""What speaks for and against `call`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "call"
BIAS = -157
WEIGHTS = """\
#abla:82 #able:145 #abou:93 #acue:23 #adie:-39 #adit:33 #agen:46 #ager:35 #akes:37 #akin:-23 #algu:67 #alke:-30
#alki:-98 #alle:-56 #amad:62 #amam:39 #aman:36 #amar:54 #amen:157 #amos:29 #anag:35 #anas:-67 #anda:-30 #ando:50
#answ:-99 #anym:-25 #apun:-24 #arca:285 #aren:-33 #arle:31 #arme:72 #aron:-93 #arqu:174 #arre:22 #asam:30 #asem:30
#asie:24 #ater:-34 #athe:52 #ator:26 #auto:-28 #away:-23 #band:31 #been:-37 #bett:44 #bill:22 #blan:-34 #blar:76
#blem:137 #blow:-22 #bout:93 #brak:38 #call:170 #came:135 #canc:-30 #cant:26 #cell:-24 #celu:-22 #cesi:26 #chan:35
#chem:139 #cked:-24 #comp:-23 #comu:23 #cond:-27 #cont:-92 #coul:40 #cuan:35 #days:-25 #dial:23 #dier:-26 #digo:35
#disc:36 #dita:33 #does:-22 #dont:66 #duen:27 #eady:-33 #eard:-28 #ease:55 #easi:23 #ebod:37 #echa:39 #eche:139
#ecio:-30 #econ:-26 #eden:50 #eeti:-26 #efer:26 #efie:74 #efon:-40 #egla:25 #ejor:75 #elef:-40 #elep:74 #else:-42
#elul:-22 #eman:-72 #emos:30 #emov:-34 #engo:39 #enme:173 #enor:-40 #enta:22 #eone:30 #eopl:-63 #epho:74 #eply:-26
#erat:35 #eron:-87 #erso:48 #esen:24 #esit:26 #espo:50 #essa:-25 #esta:-83 #este:-102 #esto:50 #etin:-26 #ette:49
#ever:-87 #exte:24 #fier:73 #fine:-27 #firm:22 #firs:-26 #fona:158 #fono:-91 #foun:-23 #game:51 #gent:46 #gere:28
#give:49 #gles:-31 #guie:35 #guys:-60 #habl:228 #hank:-22 #hast:22 #have:46 #hear:-62 #heme:139 #hese:29 #hoev:80
#hone:100 #houg:25 #hous:24 #huma:67 #hurs:-28 #husb:32 #icar:49 #icke:-26 #iend:22 #iero:53 #igui:-23 #ions:24
#irma:22 #irst:-26 #iscu:37 #isnt:-33 #july:-39 #just:40 #kind:22 #king:-119 #know:37 #lama:204 #lame:177 #larl:23
#last:-27 #late:-45 #leas:56 #lefo:-40 #leme:114 #lenm:-24 #leph:74 #lgui:58 #like:29 #line:95 #live:36 #lked:-30
#lkin:-98 #llam:385 #lled:-65 #long:-26 #lses:-22 #lula:-22 #mada:23 #mame:39 #mand:-28 #marc:282 #marm:69 #marq:174
#mbre:23 #mebo:37 #meet:-28 #mejo:75 #menm:144 #ment:-29 #meon:30 #mess:-30 #more:-24 #morn:-55 #morr:27 #move:-45
#nadi:-39 #nage:35 #nana:22 #nazo:158 #ncel:-23 #nece:25 #need:46 #neve:-104 #nfir:24 #ngam:33 #ning:-35 #nobo:-46
#nows:24 #nsig:-22 #nswe:-99 #ntes:-87 #nunc:-48 #nymo:-25 #obod:-46 #obra:-23 #oeve:80 #oing:-25 #omeb:37 #omeo:30
#omor:27 #omun:23 #onaz:158 #onea:29 #onfi:24 #onga:28 #only:-25 #onsi:-22 #onte:-93 #oper:34 #ople:-63 #orks:-34
#orni:-55 #orro:27 #orry:-45 #ough:44 #ould:88 #ouse:25 #over:46 #para:48 #pase:28 #peak:92 #peop:-63 #pera:33
#pero:54 #pers:47 #phon:116 #pick:-144 #plat:26 #plea:59 #poke:-28 #pong:30 #posa:27 #prec:-26 #pref:100 #pued:80
#punt:-26 #quem:129 #quen:57 #quit:-45 #rake:39 #rath:54 #rato:75 #rcan:53 #reci:-33 #refe:26 #refi:74 #regl:27
#remo:-34 #repl:-22 #ribe:-24 #righ:-27 #ring:273 #rmen:-24 #rnin:-46 #rque:182 #rreg:27 #rrow:27 #rsda:-24 #rson:48
#same:26 #sban:32 #seco:-26 #sema:-72 #seme:30 #send:-35 #seno:-40 #sier:36 #sigu:-27 #sito:27 #some:40 #sorr:-45
#spea:92 #spok:-28 #spos:43 #ssag:-29 #star:-31 #stio:24 #stop:-26 #stoy:28 #swer:-99 #talk:-125 #tall:28 #tati:25
#tele:34 #tell:32 #teng:30 #test:-94 #that:-23 #ther:75 #thes:29 #this:-51 #thou:24 #ting:-31 #tion:48 #toda:35
#tomo:27 #tras:24 #tter:42 #ttle:25 #type:23 #uand:24 #uedo:31 #ueme:132 #uenm:47 #ueno:22 #uest:27 #uier:31 #uman:67
#unca:-48 #ursd:-24 #usba:32 #volv:-24 #vuel:22 #want:86 #week:-28 #what:-24 #when:-49 #whoe:80 #will:22 #with:114
#work:26 #woul:51 #ymor:-25 #your:-34 %again_later%bad:-24 %again_later%lift:-24 %again_later%odometer:66
%again_later%phone:64 %again_later%shift_it:-35 %again_later%staff:-45 %again_later%start_again:-23
%again_later%who:-52 %again_later%wrong_one:-25 %agree:-63 %agree%bring:-39 %agree%car:25 %agree%doubt:22
%agree%how_long:25 %agree%leave_me:-48 %agree%machine:43 %agree%odometer:34 %agree%on_way:35 %agree%phone:156
%agree%question:23 %agree%refuse:71 %agree%staff:23 %agree%wrong_one:31 %away:-88 %away%bring:-26 %away%call_off:-56
%away%car:-28 %away%fails:22 %away%phone:-74 %away%question:-39 %bad:-24 %bad%phone:28 %bring:-64 %bring%busy:-26
%bring%call_off:-74 %bring%do_it:25 %bring%elsewhere:37 %bring%leave_me:-32 %bring%staff:41 %busy%call_off:-59
%busy%phone:24 %busy%shift_it:-24 %busy%wrong_one:36 %call_off%car:38 %call_off%doubt:30 %call_off%elsewhere:36
%call_off%fails:64 %call_off%family:22 %call_off%how_long:22 %call_off%machine:67 %call_off%meaning:34
%call_off%message:33 %call_off%money:22 %call_off%odometer:-26 %call_off%on_way:26 %call_off%phone:143
%call_off%place:48 %call_off%question:28 %call_off%staff:31 %call_off%who:-40 %call_off%wrong_one:111 %car%family:26
%car%odometer:30 %car%phone:41 %car_part:37 %car_part%do_it:44 %car_part%noise:-22 %car_part%phone:92
%car_part%staff:33 %car_part%wrong_one:26 %do_it:-23 %do_it%phone:48 %do_it%question:-32 %do_it%shift_it:-30
%doubt:33 %doubt%phone:94 %doubt%question:31 %doubt%refuse:32 %elsewhere%phone:78 %elsewhere%refuse:24
%elsewhere%wrong_one:-23 %fails%how_long:22 %fails%phone:78 %fails%question:26 %fails%refuse:31 %fails%start_again:27
%family%odometer:44 %family%refuse:-22 %family%shift_it:22 %gone_car%staff:-32 %how_long%phone:75 %how_long%refuse:47
%leave_me:-144 %leave_me%message:-37 %leave_me%odometer:-23 %leave_me%phone:-77 %leave_me%wrong_one:-27 %lift:-28
%machine:79 %machine%refuse:65 %machine%staff:91 %machine%start_again:29 %machine%wrong_one:35 %meaning:39
%meaning%phone:79 %meaning%refuse:31 %message:-44 %message%phone:30 %message%refuse:51 %message%wrong_one:65
%money%phone:96 %money%refuse:62 %money%staff:60 %money%wrong_one:23 %noise:-55 %noise%phone:-42 %noise%question:-38
%odometer%shift_it:24 %odometer%staff:-38 %on_way%phone:74 %phone:483 %phone%place:42 %phone%question:135
%phone%refuse:175 %phone%season:-71 %phone%shift_it:165 %phone%smoke_smell:34 %phone%staff:127 %phone%start_again:46
%phone%who:-32 %phone%wrong_one:44 %place%refuse:25 %question:-97 %question%refuse:59 %refuse%shift_it:29
%refuse%start_again:46 %refuse%thanks:-31 %season:-102 %shift_it%staff:-30 %smoke_smell:42 %staff:161
%staff%start_again:51 %staff%wrong_one:77 %start_again%who:-31 %thanks:-33 %who:-38 %who%wrong_one:-33 %wrong_one:-91
@?:24 @after_visit:46 @car:30 @confirm:-60 @confirm_stop:-37 @day:77 @later:-106 @odometer:27 @offers:-32
@reading:-79 @time:26 @times:-80 @walk_in:-22 ^_a:-24 ^_am:-23 ^_are:-24 ^_call:44 ^_can:91 ^_como:-38 ^_deme:29
^_do:-76 ^_el:-24 ^_este:-51 ^_fine:-31 ^_get:50 ^_got:-54 ^_hablan:-34 ^_hableme:30 ^_hablenme:-46 ^_have:25
^_hit:39 ^_how:-44 ^_id:47 ^_ill:-87 ^_im:-23 ^_it:22 ^_just:30 ^_let:-53 ^_llamenme:45 ^_marca:-29 ^_marqueme:32
^_me:-103 ^_my:35 ^_nadie:-48 ^_need:26 ^_never:-23 ^_new:-25 ^_nobody:-35 ^_not:-22 ^_nunca:-31 ^_phone:78
^_please:-30 ^_prefiero:60 ^_pueden:61 ^_put:26 ^_quien:-26 ^_quiero:43 ^_ring:74 ^_se:-34 ^_si:-64 ^_sorry:-38
^_talk:-23 ^_the:-38 ^_this:-91 ^_we:-30 ^_when:-26 ^_who:49 ^_works:-32 ^_would:25 ^_ya:-42 ^_yes:-48 ^_you:-119
a:65 a__and:34 a__back:26 a__can:-25 a__on:25 a_call:53 a_few:-33 a_human:54 a_las:-44 a_live:33 a_meeting:-26
a_mi:26 a_person:37 a_ring:40 about:93 about_my:36 about_this:42 acuerdo:23 acuerdo_$:23 al:92 al_rato:48 alguien:58
alguien_$:30 am:-81 am__talking:-44 am_i:-57 and:124 and__want:22 and__will:31 and_we:26 answer:-91 anymore:-25
anymore_$:-25 are__talking:-33 are_we:-32 as:-23 ask:-22 at:29 at_the:34 auto:-25 away:-23 away_from:-25 been:-37
been__to:-39 better:44 brakes:41 brakes_$:31 call:185 call_$:74 call__my:-37 call__off:-26 call_back:31 call_it:-38
call_me:292 call_my:68 call_off:-78 called:-70 called__back:-40 called_me:-41 can:115 can__pick:-44 can__talk:73
can_i:42 can_you:25 cant:28 cel:-88 cel_$:-30 cell:-24 cell_$:-32 celular:-22 chance_$:33 como__mi:-22 con:148
con__dueno:28 con_alguien:27 con_el:56 contesta:-83 could:35 cuando:24 da:-24 dar:-23 days_$:-26 de_acuerdo:22
deme:31 did:28 did__brakes:38 did_my:38 digo:35 do_i:28 do_not:-63 do_this:22 don:27 dont:66 dont_do:27 dont_text:24
dueno:28 easier:23 echeme:139 el:-48 el_dueno:29 el_telefono:-87 elses:-22 en:-48 en_la:22 en_persona:26 es:-46
es_de:-26 escribir:24 ese:-29 esposa:27 este:-105 este__es:-23 este_cel:-45 este_telefono:-45 esto:22 estoy:30
estoy__el:23 estoy_en:22 ever:-43 explica:-30 favor_$:-26 few:-33 fine:-27 fine__me:-34 fine_with:-30 first:-26
first_$:-29 for:-22 for_me:-25 found:-23 from_my:-30 gerente:28 get:71 get__a:48 get_a:52 get_me:49 get_my:-42
give:52 give__a:34 give_me:29 got:-31 got_to:-45 guy:-25 guys:-60 guys_$:-50 habla:35 hablan:-28 hablar:56
hablar__el:26 hablar_con:55 hable:25 hableme:115 hableme_para:29 hablenme:-23 hasta:22 have:46 have__phone:23
have__wrong:-29 he:23 hear:-29 heard:-31 heard_of:-23 her:-38 hit:39 house:26 how:-30 how__are:-23 human:61
husband:32 i:41 i__a:27 i__do:31 i__it:-33 i__the:-33 i__to:95 i__you:-40 i_dont:82 i_pick:-66 i_speak:52 i_talk:80
i_talking:-44 i_want:61 id:58 id__to:31 id_like:35 if:71 if__is:24 if_you:42 ill:-79 ill__to:-25 ill__you:-38
ill_call:-86 im:-57 im__a:-40 im_in:-32 im_ready:-38 in:-67 in_a:-41 in_july:-39 ingles:-30 is_my:-22 is_this:-26
isnt:-33 it_is:29 it_off:-37 july:-39 july_$:-39 just:40 just__me:50 just_call:31 just_phone:27 knows:24 la__por:-26
last:-31 later:-30 later_$:-32 le:35 le_digo:22 let:-58 let__talk:-30 let_me:-62 like:31 like_a:23 like_to:26 line:74
line_$:43 live:32 live_person:27 llamada:27 llamada_$:29 llamame:39 llaman:36 llamenme:144 llamenme_$:43 lo:-47
lo_que:-23 los:25 manager:35 manager_$:23 manana:22 marca:57 marqueme:116 marqueme_$:25 marquenme:48 me:103 me__a:-37
me__al:46 me__it:25 me__la:-26 me__por:83 me__ring:33 me__un:-23 me__we:44 me__you:39 me_a:49 me_about:33 me_and:48
me_back:-25 me_da:-25 me_explica:-39 me_habla:39 me_hable:25 me_i:60 me_if:27 me_in:-46 me_la:-26 me_late:-23
me_lo:-32 me_marca:100 me_please:47 me_so:30 me_talk:-30 me_when:41 me_with:65 meeting:-26 mejor:75 mi:-50
mi_esposa:28 mi_telefono:-42 morning:-54 morning_to:-47 my:66 my__are:26 my__first:-42 my__number:27
my_appointment:-25 my_brakes:44 my_cell:-31 my_husband:32 my_phone:-82 my_work:47 nadie:-39 necesito:27 need:42
need_to:23 never:-101 never__of:-23 never_heard:-23 new:-52 new_phone:-35 ni:-33 no:-22 no_$:-40 no_es:-26 nobody:-46
not:-105 now_$:-23 nunca:-48 nunca_me:-37 o:-24 off:-141 off_$:-32 off__appointment:-45 off_my:-53 on:83 on__phone:27
on_the:88 only:-25 or:-77 out:28 over:57 over__phone:52 over_the:55 para:53 pasame:30 paseme:32 people:-63 pero:57
person:51 person_$:28 phone_$:-106 phone__and:29 phone__at:-22 phone__when:32 phone_anymore:-27 phone_me:265
phone_my:27 pick:-122 pick__up:-51 pick_it:-33 picked:-23 please:61 please_$:31 please__me:28 please_phone:37
please_remove:-26 pongame:35 por:106 por__mejor:27 por_telefono:107 precio:-28 prefer:26 prefiero:75 pueden:50
puedo:30 put:29 que__hable:22 que__la:22 que__llame:23 que__me:-25 que_me:22 quien:-52 quien_me:-26 quiero:65
quiero__con:45 rather:54 rato:43 rato_$:48 ready:-40 ready_$:-39 remove:-33 reply:-26 right:-24 right_now:-31
ring:290 ring_me:181 schedule_$:-28 se_me:-32 second:-26 second_$:-23 semanas:-68 semanas_$:-68 send:-33 send_me:-24
set:27 set__up:26 set_it:26 si:-43 si__favor:-49 si_por:-49 so:24 so__can:25 so_we:26 somebody:37 someone:31
someone_$:24 someone__me:22 sorry:-45 sorry_i:-30 soy:-30 speak:108 speak_to:91 speak_with:28 stop:-27 su:-26
talk__me:-39 talk__my:-43 talk__the:23 talked:-30 talking:-97 talking_$:-30 talking_to:-44 tel:42 telefono:-91
telefono_$:-44 telephone:74 telephone_me:44 tell:33 tengo:29 text:-27 text_$:-46 text_me:-30 that:-23 the:82
the__call:28 the_house:26 the_manager:26 the_second:-23 the_way:-22 the_wrong:-25 these:29 this:-51 this_$:34
this_is:-24 this_isnt:-43 this_phone:-81 though:24 thursday:-24 thursday_$:-28 to:32 to_$:23 to__in:-35 to__it:35
to__me:28 to__off:-37 to__this:45 to__wife:-42 to__you:-47 to_about:57 to_call:-65 to_me:-88 to_my:-80 to_set:26
to_speak:55 tomorrow:24 too:22 try:52 type:23 un:127 una:62 up:-61 up_$:-37 want:74 want_a:30 want_to:29 was:-27
we:-29 we_have:-30 we_talking:-33 when:-46 when__get:38 when__i:-26 when_i:-37 when_im:-43 when_you:51 who:59
who__i:61 who_am:-39 who_can:59 whoever:69 will__it:24 with:115 with_a:24 with_me:-32 with_someone:51 work:54
works:-34 would:52 y:117 y_me:-33 ya:-55 ya_me:-22 yes:-53 you:-179 you__a:32 you__im:-42 you__the:-28 you_call:50
you_guys:-57 you_have:-27 you_people:-67 you_when:-38 your:-29
"""
