"""What speaks for and against `call`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "call"
BIAS = -167
WEIGHTS = """\
#abla:101 #able:153 #abou:96 #adie:-40 #adit:32 #agen:47 #ager:39 #akes:36 #algu:74 #alke:-29 #alki:-102 #alle:-61
#amad:69 #amam:47 #aman:38 #amar:59 #amen:188 #amos:31 #anag:39 #anas:-68 #anda:-30 #ando:56 #answ:-99 #anym:-25
#apun:-25 #arca:284 #aren:-32 #arle:31 #arme:76 #aron:-93 #arqu:180 #asam:30 #asem:30 #ater:-34 #athe:54 #ator:27
#auto:-28 #band:31 #been:-37 #bett:42 #blan:-27 #blar:86 #blem:142 #blow:-26 #bout:96 #brak:38 #call:177 #came:135
#canc:-34 #cant:25 #cesi:30 #chan:36 #chem:139 #comu:25 #cond:-26 #cont:-90 #coul:39 #cuan:41 #days:-25 #dier:-25
#digo:37 #disc:36 #dita:32 #dont:64 #duen:28 #eady:-39 #eard:-38 #ease:61 #ebod:42 #echa:41 #eche:140 #ecio:-29
#econ:-25 #eden:57 #eeti:-26 #efer:26 #efie:77 #efon:-41 #egla:25 #ejor:94 #elef:-41 #elep:72 #else:-43 #eman:-72
#emos:32 #emov:-34 #engo:41 #enme:206 #enor:-38 #eone:36 #eopl:-64 #epho:72 #eply:-25 #erat:36 #eron:-88 #erso:54
#esen:27 #esit:29 #espo:54 #essa:-28 #esta:-83 #este:-105 #esto:53 #etin:-26 #ette:47 #ever:-104 #fier:76 #fine:-26
#firs:-26 #fona:157 #fono:-92 #game:52 #gent:48 #gere:30 #give:55 #gles:-26 #guie:42 #guys:-63 #habl:259 #have:49
#hear:-69 #heme:139 #hese:29 #hoev:79 #hone:85 #houg:25 #huma:69 #hurs:-29 #husb:31 #icar:52 #icke:-25 #iend:25
#iero:65 #irst:-26 #iscu:37 #isnt:-32 #july:-40 #just:33 #king:-125 #know:36 #lama:226 #lame:212 #last:-28 #late:-48
#leas:62 #lefo:-41 #leme:119 #leph:72 #lgui:65 #like:27 #line:96 #live:35 #lked:-30 #lkin:-102 #llam:441 #lled:-69
#long:-34 #mada:31 #mame:46 #mand:-30 #marc:283 #marm:70 #marq:181 #mebo:42 #meet:-27 #mejo:94 #menm:170 #ment:-30
#meon:36 #mess:-33 #morn:-56 #morr:29 #move:-44 #nadi:-40 #nage:39 #nazo:157 #ncel:-26 #nece:28 #need:47 #neve:-119
#ngam:34 #ning:-37 #nobo:-48 #nswe:-99 #ntes:-80 #nunc:-48 #nymo:-25 #obod:-48 #oeve:79 #oing:-26 #omeb:42 #omeo:36
#omor:29 #omun:25 #onaz:157 #onea:29 #onga:29 #onte:-90 #oper:35 #ople:-64 #orks:-35 #orni:-56 #orro:28 #orry:-46
#ough:43 #ould:87 #ouse:25 #over:46 #para:60 #pase:29 #peak:96 #peop:-64 #pera:34 #pero:59 #pers:52 #phon:102
#pick:-139 #plat:27 #plea:65 #poke:-27 #pong:31 #posa:30 #pref:104 #pued:98 #punt:-26 #quem:134 #quen:61 #quit:-44
#rake:39 #rath:55 #rato:75 #rcan:52 #reci:-32 #refe:26 #refi:77 #regl:27 #remo:-34 #ribe:-25 #righ:-27 #ring:278
#rnin:-47 #rque:189 #rreg:27 #rrow:29 #rsda:-26 #rson:54 #same:27 #sban:31 #seco:-26 #sema:-72 #seme:30 #send:-34
#seno:-38 #sier:37 #sigu:-26 #sito:31 #some:53 #sorr:-46 #spea:96 #spok:-27 #spos:47 #ssag:-32 #star:-32 #stop:-40
#stoy:29 #swer:-99 #talk:-120 #tall:27 #tati:25 #tele:32 #tell:30 #teng:31 #test:-91 #that:-29 #ther:75 #thes:29
#this:-72 #ting:-35 #tion:46 #toda:34 #tomo:28 #tras:28 #tter:41 #uand:29 #ueda:26 #uede:38 #uedo:30 #ueme:137
#uenm:50 #uest:27 #uier:41 #uman:69 #unca:-47 #ursd:-26 #usba:31 #volv:-26 #want:89 #week:-31 #what:-28 #when:-56
#whoe:79 #with:115 #work:26 #woul:51 #ymor:-25 #your:-36 %again_later%bad:-26 %again_later%lift:-26
%again_later%odometer:65 %again_later%phone:73 %again_later%shift_it:-30 %again_later%staff:-43
%again_later%start_again:-33 %again_later%who:-57 %again_later%wrong_one:-28 %agree:-63 %agree%bring:-39
%agree%how_long:25 %agree%leave_me:-48 %agree%machine:44 %agree%odometer:33 %agree%on_way:35 %agree%phone:173
%agree%question:27 %agree%refuse:73 %agree%staff:34 %agree%wrong_one:35 %away:-101 %away%bring:-26 %away%call_off:-64
%away%car:-27 %away%phone:-81 %away%question:-45 %bad:-28 %bad%phone:27 %bring:-83 %bring%busy:-25
%bring%call_off:-79 %bring%elsewhere:38 %bring%leave_me:-46 %bring%staff:43 %busy%call_off:-59 %busy%phone:28
%busy%wrong_one:36 %call_off:-57 %call_off%car:34 %call_off%doubt:31 %call_off%elsewhere:38 %call_off%fails:62
%call_off%machine:68 %call_off%meaning:36 %call_off%message:29 %call_off%odometer:-27 %call_off%phone:164
%call_off%place:47 %call_off%staff:44 %call_off%who:-46 %call_off%wrong_one:109 %car%odometer:29 %car%phone:42
%car_part:28 %car_part%do_it:43 %car_part%phone:93 %car_part%staff:33 %car_part%wrong_one:26 %do_it:-31
%do_it%phone:49 %do_it%question:-34 %do_it%shift_it:-29 %doubt:37 %doubt%phone:97 %doubt%question:34 %doubt%refuse:34
%elsewhere%phone:81 %elsewhere%wrong_one:-26 %fails%phone:83 %fails%question:26 %fails%refuse:30
%fails%start_again:25 %family%odometer:49 %gone_car:-25 %gone_car%staff:-30 %gone_car%wrong_one:-25
%how_long%phone:77 %how_long%refuse:48 %leave_me:-164 %leave_me%message:-43 %leave_me%phone:-86
%leave_me%wrong_one:-30 %lift:-30 %machine:85 %machine%refuse:67 %machine%staff:96 %machine%start_again:29
%machine%wrong_one:39 %meaning:44 %meaning%phone:84 %meaning%refuse:34 %message:-57 %message%phone:29
%message%refuse:49 %message%wrong_one:63 %money%phone:96 %money%refuse:62 %money%staff:62 %noise:-57 %noise%phone:-40
%noise%question:-37 %odometer%staff:-35 %on_way%phone:75 %phone:578 %phone%place:45 %phone%question:151
%phone%refuse:197 %phone%season:-71 %phone%shift_it:179 %phone%smoke_smell:35 %phone%staff:163 %phone%start_again:52
%phone%who:-40 %phone%wrong_one:35 %place%refuse:25 %question:-92 %question%refuse:70 %question%staff:30
%refuse%shift_it:36 %refuse%start_again:52 %refuse%thanks:-33 %refuse%wrong_one:-25 %season:-107 %shift_it%staff:-25
%smoke_smell:40 %staff:218 %staff%start_again:58 %staff%wrong_one:95 %start_again%who:-35 %thanks:-38 %who:-46
%who%wrong_one:-36 %wrong_one:-131 @?:30 @after_visit:65 @car:28 @confirm:-60 @confirm_stop:-39 @day:84 @later:-113
@offers:-33 @reading:-88 @time:32 @times:-63 ^_call:50 ^_can:96 ^_como:-38 ^_deme:30 ^_do:-79 ^_el:-26 ^_este:-51
^_fine:-29 ^_get:48 ^_got:-55 ^_hablan:-29 ^_hableme:31 ^_hablenme:-44 ^_have:28 ^_hit:40 ^_how:-49 ^_id:48 ^_ill:-93
^_just:30 ^_let:-50 ^_llamame:26 ^_llamenme:55 ^_marca:-31 ^_marqueme:34 ^_me:-91 ^_mejor:30 ^_my:36 ^_nadie:-50
^_need:26 ^_never:-34 ^_new:-28 ^_nobody:-35 ^_nunca:-31 ^_phone:78 ^_please:-26 ^_prefiero:61 ^_pueden:62 ^_put:26
^_quien:-25 ^_quiero:51 ^_ring:76 ^_se:-32 ^_si:-68 ^_sorry:-38 ^_the:-40 ^_this:-95 ^_we:-31 ^_when:-26 ^_who:44
^_works:-32 ^_would:25 ^_ya:-50 ^_yes:-52 ^_you:-129 a:86 a__and:33 a_call:53 a_few:-32 a_human:54 a_las:-41
a_live:33 a_meeting:-26 a_mi:31 a_person:39 a_ring:42 about:96 about_my:35 about_this:41 al:95 al_rato:47 alguien:65
alguien_$:33 am:-83 am__talking:-46 am_i:-59 and:120 and__will:30 and_we:25 answer:-90 anymore:-25 are__talking:-36
are_we:-35 at:27 at_the:34 auto:-25 away_from:-25 been:-37 been__to:-39 better:42 brakes:41 brakes_$:31 call:192
call_$:78 call__my:-37 call__off:-26 call_back:30 call_it:-38 call_me:304 call_my:66 call_off:-77 called:-74
called__back:-45 called_me:-45 can:119 can__pick:-43 can__talk:72 can_i:42 can_you:27 cant:26 cel:-86 cel_$:-28
cell_$:-30 chance_$:32 con:165 con__dueno:30 con_alguien:29 con_el:63 contesta:-82 could:35 cuando:29 days_$:-25
deme:32 did:27 did__brakes:38 did_my:38 digo:37 do_i:26 do_not:-65 don:28 dont:64 dont_do:27 dueno:30 echeme:139
el:-33 el_dueno:31 el_telefono:-86 en:-51 en_persona:26 es:-48 es_de:-26 ese:-30 esposa:30 este:-108 este__es:-25
este_cel:-45 este_telefono:-47 estoy:30 ever:-43 explica:-28 few:-32 fine:-26 fine__me:-33 fine_with:-29 first:-26
first_$:-29 for:-28 for_me:-26 from_my:-30 gerente:30 get:66 get__a:46 get_a:49 get_me:47 get_my:-42 give:58
give__a:39 give_me:35 got:-40 got_to:-45 guys:-63 guys_$:-51 habla:37 hablar:66 hablar__el:30 hablar_con:65 hable:26
hableme:120 hableme_para:30 have:49 have__wrong:-30 hear:-27 heard:-41 heard_of:-33 her:-38 hit:39 house:26 how:-35
how__are:-26 human:62 husband:31 i:30 i__a:27 i__do:31 i__it:-33 i__the:-31 i__to:92 i__you:-40 i_dont:82 i_pick:-64
i_speak:53 i_talk:80 i_talking:-46 i_want:63 id:59 id__to:31 id_like:35 if:70 if_you:42 ill:-86 ill__you:-43
ill_call:-91 im:-63 im__a:-40 im_in:-31 im_ready:-43 in:-75 in_a:-42 in_july:-40 ingles:-26 is_this:-27 isnt:-32
it_is:28 it_off:-37 july:-40 july_$:-40 just:33 just__me:50 just_call:32 just_phone:27 la__por:-25 last:-32 later:-30
later_$:-32 le:38 let:-54 let__talk:-29 let_me:-58 like:30 like_to:27 line:75 line_$:44 live:32 live_person:27
llamada:35 llamada_$:38 llamame:47 llaman:39 llamen:25 llamenme:170 llamenme_$:50 lo:-50 los:25 manager:39
manager_$:25 marca:53 marqueme:119 marqueme_$:26 marquenme:50 me:160 me__a:-34 me__al:45 me__it:25 me__por:85
me__ring:35 me__we:44 me__you:38 me_a:54 me_about:36 me_and:48 me_back:-30 me_da:-25 me_explica:-37 me_habla:40
me_hable:26 me_i:58 me_if:26 me_in:-49 me_late:-25 me_lo:-33 me_marca:99 me_please:50 me_so:29 me_talk:-29 me_when:40
me_with:65 meeting:-26 mejor:94 mi:-44 mi_esposa:30 mi_telefono:-42 morning:-55 morning_to:-47 my:50 my__are:25
my__first:-42 my__number:27 my_appointment:-26 my_brakes:44 my_cell:-29 my_husband:31 my_phone:-87 my_work:47
nadie:-40 necesito:31 need:43 never:-116 never__of:-33 never_heard:-33 new:-56 new_phone:-37 ni:-35 no:-33 no_$:-43
no_es:-26 nobody:-48 not:-106 now_$:-25 nunca:-47 nunca_me:-36 of:-33 off:-145 off_$:-34 off__appointment:-45
off_my:-53 on:78 on__phone:28 on_the:88 or:-78 out:26 over:57 over__phone:52 over_the:55 para:65 pasame:30 paseme:32
people:-64 pero:61 person:53 person_$:30 phone_$:-111 phone__and:29 phone__when:30 phone_anymore:-25 phone_me:265
phone_my:27 pick:-118 pick__up:-51 pick_it:-32 please:68 please_$:33 please__me:27 please_phone:37 please_remove:-25
pongame:36 por:116 por__mejor:28 por_telefono:106 precio:-27 prefer:27 prefiero:77 pueden:57 puedo:28 put:29
que__llame:26 que_me:38 quien:-50 quien_me:-26 quiero:74 quiero__con:51 quiero_hablar:25 rather:55 rato:41 rato_$:46
ready:-45 ready_$:-43 remove:-33 reply:-25 right_now:-31 ring:297 ring_me:185 schedule_$:-27 se_me:-29 second:-25
semanas:-68 semanas_$:-68 send:-31 set:25 set__up:25 set_it:26 si:-45 si__favor:-53 si_por:-53 so_we:25 somebody:42
someone:37 someone_$:25 someone__me:25 sorry:-46 sorry_i:-29 soy:-31 speak:112 speak_to:92 speak_with:31 stop:-40
su:-26 talk__me:-39 talk__my:-43 talk__the:25 talked:-30 talking:-102 talking_$:-33 talking_to:-46 tel:43
telefono:-92 telefono_$:-47 telephone:72 telephone_me:43 tell:31 tengo:31 text:-31 text_$:-47 text_me:-32 that:-28
the:84 the__call:30 the_house:26 the_manager:30 the_wrong:-26 these:29 this:-72 this_$:32 this_is:-25 this_isnt:-42
this_phone:-91 thursday:-25 thursday_$:-28 to:32 to__in:-35 to__it:35 to__me:28 to__off:-38 to__this:44 to__wife:-42
to__you:-47 to_about:56 to_call:-64 to_me:-87 to_my:-83 to_set:26 to_speak:57 tomorrow:26 try:52 un:130 una:68 up:-66
up_$:-37 want:78 want_a:31 want_to:31 was:-27 we:-34 we_have:-30 we_talking:-36 when:-53 when__get:36 when__i:-26
when_i:-37 when_im:-47 when_you:50 who:53 who__i:56 who_am:-41 who_can:57 whoever:68 with:117 with_me:-30
with_someone:51 work:54 works:-35 would:52 y:134 y_me:-31 ya:-68 yes:-56 you:-213 you__a:30 you__im:-48 you__the:-29
you_call:48 you_guys:-60 you_have:-28 you_people:-67 you_when:-43 your:-30
"""
