"""What speaks for and against `call`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "call"
BIAS = -164
WEIGHTS = """\
#abla:95 #able:112 #abou:82 #acia:-19 #adie:-62 #agen:74 #ager:22 #akes:29 #akin:-25 #alca:16 #algu:66 #alir:23
#alki:-76 #alle:-44 #amad:52 #amam:44 #aman:30 #amar:51 #amen:168 #amos:31 #anag:22 #anas:-67 #ance:-18 #anda:-21
#ando:34 #anic:23 #anks:-23 #answ:-91 #ante:15 #ants:19 #anym:-24 #anyt:15 #anzo:16 #apun:-21 #arca:239 #aren:-34
#arme:73 #aron:-99 #arqu:149 #arre:26 #asem:26 #asie:16 #ater:-31 #athe:56 #ativ:28 #ator:42 #auto:-33 #avor:31
#away:-16 #back:19 #band:32 #been:-54 #befo:18 #behi:17 #belo:-24 #bett:14 #bill:25 #blan:-28 #blar:81 #blem:98
#blen:-17 #book:-15 #bout:82 #brak:41 #bscr:-14 #busc:-18 #busi:18 #buzz:-22 #call:202 #came:125 #canc:-29 #canz:16
#cell:-17 #celu:-20 #cesi:26 #chan:37 #ched:-27 #chem:192 #cial:-14 #cias:-19 #cier:-25 #cked:-17 #clie:15 #comp:-22
#comu:32 #cond:-26 #conf:19 #cons:-14 #cont:-86 #conv:14 #cost:-15 #coul:35 #coup:-17 #cual:19 #cuan:46 #days:-37
#deal:21 #denm:16 #desp:22 #deta:16 #devo:-16 #dial:26 #dias:-16 #digo:25 #ding:-21 #disc:40 #does:-15 #dont:36
#duen:30 #dule:-24 #eady:-35 #eaki:-18 #eard:-26 #earm:19 #ease:55 #ebod:39 #ecal:-14 #echa:33 #eche:194 #ecio:-23
#econ:-24 #ecte:16 #edan:17 #eden:80 #edul:-24 #eeks:-20 #eeti:-28 #efie:61 #efon:-15 #efor:18 #egla:26 #ehin:17
#ejan:18 #ejor:103 #elef:-15 #elep:63 #ella:16 #elon:-20 #else:-27 #elul:-20 #eman:-72 #emin:-17 #emos:20 #emov:-28
#enca:14 #enci:-17 #enda:17 #endi:-20 #engo:28 #enme:181 #enor:-29 #ensa:-16 #enta:29 #ente:32 #enti:14 #ento:-20
#eone:34 #eopl:-73 #epho:63 #eply:-23 #erat:53 #eres:-19 #eria:15 #eron:-67 #erso:44 #esen:39 #esit:26 #espo:45
#essa:-25 #esta:-73 #este:-74 #esto:54 #etin:-28 #ette:22 #ever:-84 #evol:-16 #eway:-21 #exte:-14 #exto:23 #exts:19
#favo:31 #fier:60 #fine:-29 #firm:20 #firs:-28 #fono:-66 #fore:18 #foun:-22 #garo:-21 #genc:-14 #gent:80 #gimm:20
#give:55 #gles:-23 #goin:-23 #grac:-20 #guie:33 #guys:-63 #habl:224 #hand:20 #hani:14 #hank:-28 #have:26 #hear:-42
#hedu:-24 #here:15 #hese:18 #hici:-24 #hind:17 #hing:33 #hizo:-15 #hoev:71 #home:-17 #hone:77 #hous:16 #hout:23
#huma:40 #humb:17 #hurs:-24 #husb:32 #ibir:18 #icar:38 #icie:-23 #icke:-16 #iend:23 #ient:16 #iero:45 #ific:-14
#igui:-20 #illa:-14 #imme:20 #indl:15 #ines:18 #inst:24 #inte:-14 #invo:18 #ique:23 #irst:-28 #iscu:41 #isnt:-28
#isor:19 #ivin:17 #join:23 #july:-36 #just:25 #kind:23 #king:-99 #lain:22 #lama:175 #lame:178 #lamo:17 #last:-20
#late:-46 #lati:14 #lcan:16 #leas:53 #lefo:-15 #leme:86 #lenm:-26 #leph:63 #lgui:53 #lica:-26 #line:73 #list:-15
#live:28 #lkin:-76 #llam:350 #lled:-54 #long:-33 #lula:-20 #lver:-16 #lvio:-14 #mada:44 #mame:44 #mana:-52 #mand:-17
#maqu:15 #marc:238 #marq:149 #mebo:39 #mech:14 #meet:-28 #mejo:103 #menm:144 #mens:-15 #ment:-25 #meon:34 #mess:-33
#moke:14 #morn:-63 #morr:31 #move:-36 #muni:30 #nadi:-62 #nage:22 #ncar:15 #ncel:-28 #ncia:-15 #nden:-15 #nder:-17
#ndin:-14 #ndly:15 #near:28 #nece:24 #need:49 #ness:18 #neve:-114 #nfir:21 #ning:-53 #nobo:-45 #noon:14 #nora:-17
#nsaj:-15 #nste:26 #nswe:-91 #nter:-23 #ntes:-54 #ntie:17 #nuev:-15 #nunc:-44 #nvoi:18 #nymo:-24 #nyth:16 #obod:-45
#obot:23 #obre:21 #oeve:71 #oing:-24 #oint:18 #olve:-14 #olvi:-20 #omeb:39 #omeo:34 #omor:30 #omun:32 #onea:41
#onfi:20 #ongs:-15 #onsi:-20 #onte:-69 #onve:16 #oper:52 #ople:-73 #orks:-24 #orni:-64 #orro:30 #orry:-41 #otal:14
#otra:-15 #otro:-18 #ould:81 #ound:-26 #oupl:-16 #ouse:18 #over:47 #owns:21 #para:68 #pare:-16 #pasa:18 #pase:25
#peak:100 #peop:-73 #pera:50 #pero:59 #pers:43 #phon:79 #pick:-95 #ping:20 #plai:22 #plat:28 #plea:57 #plic:-25
#poke:-30 #posa:32 #prec:-24 #pref:64 #pres:29 #pued:120 #punt:-21 #quem:117 #quen:48 #quin:14 #quit:-20 #quot:-20
#raci:-20 #rake:41 #rath:58 #rato:85 #rcar:27 #read:-20 #reci:-27 #refi:61 #regl:30 #remi:-18 #remo:-28 #repl:-26
#repr:27 #rese:34 #ribe:-22 #ribi:18 #ring:197 #rive:-20 #rkin:15 #rmad:14 #rmen:-22 #rnin:-52 #robo:23 #rong:-27
#rque:157 #rreg:31 #rrow:30 #rsda:-22 #rson:44 #sage:-24 #saje:-15 #same:32 #sban:32 #sche:-24 #scre:16 #sday:-25
#seat:-21 #seco:-26 #sema:-72 #seme:26 #send:-24 #seno:-29 #sent:30 #shou:22 #sier:23 #sigu:-21 #sine:18 #sito:26
#sobr:21 #some:59 #sorr:-41 #sort:17 #spea:100 #spok:-30 #spos:38 #ssag:-32 #stan:-15 #star:-31 #stea:26 #sted:-15
#stop:-41 #stoy:14 #subs:-14 #swer:-91 #take:-31 #talk:-85 #tall:27 #tati:30 #tead:26 #tech:15 #tele:49 #tell:17
#teme:15 #teng:29 #test:-68 #than:-22 #that:-26 #ther:74 #thes:18 #thin:28 #this:-57 #thum:17 #thur:-24 #tica:22
#tien:17 #tifi:-14 #time:-16 #ting:-54 #tion:22 #tive:28 #tmrw:15 #toda:20 #tomo:30 #tota:14 #tras:19 #tres:-22
#tter:15 #ttle:22 #type:25 #typi:24 #uand:37 #ubsc:-14 #ueda:38 #uede:68 #uedo:21 #ueme:116 #uenm:40 #ueno:32
#uevo:-21 #ught:-16 #uien:16 #uier:28 #uina:15 #ular:-19 #uman:40 #umbs:17 #unca:-44 #unde:-21 #unte:-18 #unto:-17
#uote:-20 #uple:-16 #ursd:-22 #usba:32 #usca:-18 #usin:17 #uste:-14 #vece:-23 #vemo:14 #vend:-16 #viso:16 #volv:-32
#wait:-22 #want:82 #week:-23 #what:-33 #when:-37 #whoe:71 #will:20 #with:102 #work:26 #woul:48 #wron:-27 #xpla:24
#xpli:-30 #xtos:18 #ymor:-24 #your:-26 #ypin:24 %again_later:-37 %again_later%busy:-26 %again_later%call_off:-26
%again_later%elsewhere:-22 %again_later%how_long:-22 %again_later%lift:-23 %again_later%message:-14
%again_later%money:16 %again_later%odometer:57 %again_later%pay_day:-19 %again_later%phone:88 %again_later%refuse:-21
%again_later%shift_it:-27 %again_later%staff:-31 %again_later%start_again:-34 %again_later%who:-42
%again_later%wrong_one:-40 %agree:-64 %agree%bring:-41 %agree%busy:-23 %agree%call_off:-14 %agree%car:29
%agree%car_part:22 %agree%do_it:-20 %agree%doubt:19 %agree%family:24 %agree%how_long:16 %agree%leave_me:-44
%agree%machine:52 %agree%odometer:37 %agree%on_way:42 %agree%phone:142 %agree%question:38 %agree%refuse:68
%agree%smoke_smell:24 %agree%staff:39 %agree%start_again:-17 %agree%who:18 %agree%wrong_one:25 %away:-121
%away%bring:-22 %away%busy:-17 %away%call_off:-85 %away%car:-24 %away%phone:-84 %away%question:-38 %away%season:-17
%away%staff:-21 %bad:-25 %bad%phone:14 %bad%staff:19 %bring:-83 %bring%busy:-37 %bring%call_off:-84 %bring%doubt:17
%bring%elsewhere:21 %bring%leave_me:-37 %bring%message:-17 %bring%staff:41 %busy:-15 %busy%call_off:-56
%busy%how_long:-14 %busy%leave_me:-14 %busy%phone:25 %busy%shift_it:-21 %busy%wrong_one:33 %call_off:-48
%call_off%car:24 %call_off%doubt:40 %call_off%elsewhere:43 %call_off%fails:28 %call_off%family:29
%call_off%machine:60 %call_off%meaning:29 %call_off%money:21 %call_off%noise:-19 %call_off%odometer:-24
%call_off%on_way:22 %call_off%phone:188 %call_off%place:51 %call_off%question:22 %call_off%season:-22
%call_off%staff:64 %call_off%start_again:-38 %call_off%thanks:-14 %call_off%who:-24 %call_off%wrong_one:129 %car:-40
%car%doubt:25 %car%family:21 %car%phone:23 %car%staff:-23 %car%wrong_one:-18 %car_part:29 %car_part%do_it:53
%car_part%elsewhere:25 %car_part%noise:-15 %car_part%phone:56 %car_part%staff:45 %do_it:-66 %do_it%leak:-14
%do_it%phone:14 %do_it%question:-27 %do_it%shift_it:-18 %doubt:31 %doubt%phone:73 %doubt%question:30 %doubt%refuse:39
%doubt%wrong_one:-18 %elsewhere%phone:54 %elsewhere%place:-19 %elsewhere%shift_it:-18 %elsewhere%staff:34
%elsewhere%who:-19 %elsewhere%wrong_one:-16 %fails:-40 %fails%gone_car:-16 %fails%phone:25 %fails%place:14
%family%money:22 %family%odometer:44 %family%phone:21 %family%wrong_one:-26 %gone_car:-57 %gone_car%question:-14
%gone_car%shift_it:18 %gone_car%staff:-37 %gone_car%wrong_one:-35 %how_long:-63 %how_long%lift:-19 %how_long%phone:37
%how_long%refuse:16 %leak:-19 %leave_me:-119 %leave_me%message:-29 %leave_me%money:22 %leave_me%odometer:-19
%leave_me%phone:-41 %leave_me%place:18 %leave_me%wrong_one:-26 %lift:-32 %machine:74 %machine%money:14
%machine%refuse:66 %machine%staff:80 %machine%wrong_one:37 %meaning:25 %meaning%message:20 %meaning%phone:48
%meaning%refuse:39 %meaning%staff:20 %message:-74 %message%odometer:14 %message%phone:26 %message%start_again:-40
%message%who:18 %message%wrong_one:55 %money%phone:90 %money%refuse:49 %money%staff:32 %money%wrong_one:21 %noise:-57
%noise%phone:-34 %noise%question:-29 %odometer%refuse:-16 %odometer%staff:-30 %odometer%who:17 %on_way%phone:63
%on_way%place:25 %on_way%wrong_one:20 %opening:-17 %pay_day:-28 %phone:607 %phone%place:33 %phone%question:117
%phone%refuse:176 %phone%season:-93 %phone%shift_it:159 %phone%smoke_smell:32 %phone%staff:154 %phone%start_again:48
%phone%wrong_one:42 %place%question:-37 %place%refuse:32 %question:-87 %question%refuse:38 %question%shift_it:16
%question%staff:30 %question%wrong_one:-29 %refuse:-26 %refuse%shake:16 %refuse%staff:40 %refuse%start_again:23
%refuse%thanks:-43 %season:-127 %shift_it:47 %shift_it%staff:-14 %shift_it%wrong_one:-22 %smoke_smell:29 %staff:212
%staff%start_again:60 %staff%wrong_one:82 %start_again:-28 %start_again%who:-29 %thanks:-48 %who:-32
%who%wrong_one:-22 %wrong_one:-153 @after_visit:67 @car:27 @confirm:-88 @day:82 @later:-117 @odometer:27 @reading:-82
@times:-65 ^_a:-15 ^_am:-24 ^_are:-17 ^_call:44 ^_can:103 ^_como:-30 ^_could:15 ^_do:-81 ^_does:-14 ^_dont:-16
^_este:-46 ^_fine:-27 ^_found:-17 ^_get:38 ^_good:-20 ^_got:-46 ^_hableme:21 ^_hablenme:-47 ^_have:38 ^_hit:51
^_how:-35 ^_id:45 ^_ill:-84 ^_it:14 ^_just:31 ^_la:-16 ^_let:-50 ^_llamame:26 ^_llamenme:61 ^_lo:-27 ^_marqueme:29
^_me:-31 ^_mejor:39 ^_mi:-18 ^_my:35 ^_necesito:25 ^_need:22 ^_never:-26 ^_nobody:-27 ^_not:-27 ^_nunca:-30 ^_ok:-18
^_phone:68 ^_please:-30 ^_por:23 ^_prefiero:58 ^_puede:19 ^_pueden:71 ^_quien:-31 ^_quiero:36 ^_ring:65 ^_se:-32
^_si:-54 ^_sorry:-33 ^_stop:-20 ^_the:-34 ^_this:-90 ^_we:-32 ^_when:-17 ^_who:51 ^_works:-22 ^_would:24 ^_ya:-46
^_yes:-44 ^_you:-124 a:93 a__after:-19 a__and:40 a__can:-28 a__from:25 a__on:21 a__person:-20 a__phone:-15 a__to:17
a__weeks:-18 a_call:52 a_couple:-16 a_few:-35 a_human:31 a_la:-15 a_las:-31 a_mi:36 a_person:38 a_real:-26 a_ring:45
about:82 about_my:20 about_this:47 after_$:16 after_the:-17 ahora:-14 ahora_$:-20 al:89 al_rato:43 al_trabajo:17
alcanzo:16 alguien:53 alguien_$:28 am:-77 am__talking:-42 am_i:-60 and:111 and__me:14 and__want:29 and__will:33
and_a:18 and_cant:17 and_i:19 and_we:27 answer:-87 antes:14 antes_$:16 any:-15 anymore:-24 anymore_$:-23 anything:16
appointment:-24 appointment_$:-14 are:-37 are__talking:-22 are_we:-21 ask:-23 at:21 at__counter:-14 at_this:18
auto:-23 away:-16 b:-15 back:-15 been:-54 been__to:-48 before:18 behind:17 belongs:-15 belongs_to:-15 better:14
bill:20 brakes:40 brakes_$:30 business:18 but:-20 but__me:24 but_i:-14 by_phone:16 call:189 call_$:84 call__about:17
call__if:29 call__me:-19 call__my:-47 call__please:17 call__to:20 call_me:274 call_my:57 call_off:-65 called:-58
called__back:-37 called_me:-42 came:-21 can:122 can__call:15 can__pick:-37 can__talk:66 can__with:14 can_i:38
can_you:34 cancel:-16 car:-18 cel:-61 cel_$:-20 cell:-17 cell_$:-19 celular:-20 cliente:15 como__mi:-20
como_cuanto:21 con:164 con__dueno:36 con_alguien:22 con_el:61 con_quien:14 con_una:17 could:37 counter:-15 couple:-16
cual:19 cuando:37 da:-18 dar:-21 days:-32 days_$:-33 de:-30 de__textos:15 de_las:14 de_los:20 deal:14 dejan:15 del:21
denme:17 despues:14 despues__las:16 despues_de:18 dias:-16 dias_$:-15 did:26 did_my:41 digo:25 do:-40 do_i:20
do_not:-67 do_you:-14 don:21 dont:36 dont__texts:28 dont_do:27 dont_text:19 dueno:31 dueno_$:35 el:-50 el__no:-15
el__se:14 el__y:15 el_dueno:32 el_encargado:16 el_mecanico:17 el_telefono:-59 else:-20 en:-77 encargado:16
encargado_$:16 era:-17 es:-16 es_de:-25 es_lo:15 escribir:22 ese:-20 eso:-15 esposa:32 esposa_$:16 este:-78
este__es:-20 este__no:-16 este_cel:-34 este_telefono:-42 esto:40 esto_$:17 estoy:16 estoy__el:23 estoy_en:27 ever:-28
explain:24 explica:-41 favor:32 few:-36 fine:-29 fine__me:-30 fine_with:-27 first:-28 first_$:-30 for:-29 for_me:-14
found:-22 free:19 friday_but:19 get:62 get__a:47 get_a:48 get_me:49 get_my:-36 gimme:20 give:55 give__a:34 give_me:32
give_my:16 going:-23 going_to:-14 got:-53 got_to:-40 gracias:-18 gusta:14 guys:-63 guys_$:-53 habla:29 hablan:-18
hablar:70 hablar__el:31 hablar_con:66 hableme:87 hableme_para:27 hablenme:-26 have:26 have__phone:16 have__wrong:-25
have_somebody:15 have_the:18 hay:-16 heard:-30 heard_of:-23 her:-24 hicieron:-24 hicieron_$:-17 hit:51 hizo:-15
home:-17 house:18 how:-40 how__are:-15 human:52 husband:32 i__a:20 i__do:27 i__got:-15 i__it:-33 i__the:-39 i__to:98
i__you:-31 i_am:-15 i_can:15 i_dont:76 i_have:-17 i_pick:-55 i_speak:54 i_talk:66 i_talking:-42 i_want:60 i_was:-18
id:61 id__to:26 id_like:34 id_rather:26 if:57 if__is:21 if_you:31 ill:-87 ill__in:-15 ill__you:-39 ill_call:-78
im:-35 im__a:-42 im_free:17 im_in:-28 in:-112 in_a:-46 in_july:-36 in_the:-27 ingles:-23 instead:26 invoice:18
is_a:27 is_it:-21 is_my:-15 is_there:24 is_this:-27 is_wrong:21 isnt:-28 it:-42 it_$:23 it_off:-36 it_over:15
july:-36 july_$:-36 just:26 just__me:42 just__this:-20 just_call:37 just_got:-14 k_$:-14 kindly:15 la__de:15
la__en:-15 la__por:-27 la__que:-15 la__si:15 la_persona:-16 la_puede:-15 last:-25 late:-17 late_$:-17 later:-28
later_$:-30 le:37 le_digo:25 let:-57 let_me:-55 like:15 like_to:24 line:69 line_$:67 live:23 llamada:47 llamada_$:52
llamame:44 llamar:14 llame_el:16 llamen:27 llamenme:144 llamenme_$:38 llamenme_por:14 lo:-61 lo__en:-20 lo__me:-16
lo_mio:16 lo_que:-27 los:34 los__no:16 los__por:14 los_textos:16 manager:22 maquina:15 marca:32 marca_$:-27
marqueme:93 marquenme:41 me:159 me_$:24 me__a:-21 me__after:14 me__al:51 me__dar:-21 me__i:-16 me__it:14 me__la:-16
me__llamar:14 me__por:73 me__puede:-16 me__ring:35 me__to:-28 me__un:-23 me__we:44 me__y:19 me__you:45 me_a:54
me_about:16 me_and:43 me_back:-40 me_but:-14 me_da:-17 me_explica:-41 me_habla:32 me_hable:19 me_hicieron:-18 me_i:20
me_if:34 me_in:-37 me_la:-14 me_llame:15 me_lo:-34 me_off:-16 me_please:63 me_pueden:22 me_so:16 me_the:18 me_to:17
me_urge:15 me_when:32 me_with:50 meeting:-28 mejor:103 mejor_$:26 mejor__por:20 mejor_llamenme:17 mensaje:-14
message:-22 mi:-35 mi_esposa:32 mi_telefono:-34 mis:14 mom:-14 morning:-62 morning_$:-19 my__on:18 my_appointment:-27
my_brakes:49 my_cell:-27 my_husband:32 my_number:15 my_phone:-70 my_work:35 nadie:-62 necesito:26 necesito__con:28
need:44 need_to:40 never:-111 never__me:-14 never__of:-23 never_heard:-23 new:-32 new_phone:-18 next_week:15 ni:-43
no:-22 no_$:-31 no__de:-16 no__este:-16 no__i:22 no__la:-17 no__lo:15 no__no:-14 no_alcanzo:16 no_and:20 no_good:14
no_gracias:-14 no_le:21 no_more:23 no_se:19 no_soy:-24 no_veo:21 nobody:-45 noon:17 noon_$:17 not:-97 not_a:-16
now:-29 now_$:-18 nuevo:-20 number__the:28 number_is:19 nunca:-44 o:-21 of:-36 of_you:-16 of_your:18 off:-126
off_$:-22 off_my:-49 ok:-25 on:62 on__phone:27 on_the:55 one__it:19 one_of:21 or:-86 otra:-15 otro:-18 over:59
over_the:51 owns:21 para:73 para_los:14 people:-73 pero:60 pero_llamenme:15 person:41 person_$:23 persona_$:16
phone:21 phone_$:-71 phone__and:31 phone__to:-21 phone_me:184 pick:-80 pick__up:-43 pick_it:-24 picked:-14 please:61
please_$:27 please__is:20 please__me:31 please_dont:-21 please_have:20 please_phone:41 please_remove:-23 por:137
por__que:-15 por_favor:34 por_la:16 por_lo:-15 por_telefono:88 precio:-24 precio_$:-17 prefiero:61 prefiero__me:18
prefiero_que:17 puedan:16 pueden:80 puedo:15 put__on:-14 que__hable:14 que__hicieron:-15 que__llame:22 que_me:43
quien:-36 quien_me:-30 quiero:49 quiero__con:44 quiero_hablar:26 quote:-19 rather:58 rather__to:26 rather_talk:22
rato:32 rato_$:35 ready:-41 ready_$:-40 real_person:-17 remove:-28 reply:-23 right_now:-24 ring:225 ring_$:17
ring_me:122 salir:23 schedule:-25 schedule_$:-23 se:24 se_me:-24 seat:-21 second:-25 second_$:-22 semanas:-70
semanas_$:-70 send:-23 senora:-17 set__up:16 set_it:17 she:15 si:-15 si__favor:-42 si__me:14 si__no:16 si_me:14
si_por:-42 siento:-14 smoke:14 so__can:19 so_we:17 some:-15 somebody:39 somebody_phone:20 someone:35 someone__me:25
someone_call:15 someone_else:-16 someone_phone:15 sorry:-41 sorry_i:-23 soy:-32 soy__persona:-14 soy_la:-17 speak:117
speak_to:92 speak_with:34 stop:-35 su:-14 take:-21 talk__a:24 talk__the:28 talking:-75 talking_$:-20 talking_to:-42
telefono:-66 telefono_$:-52 telephone:63 telephone_me:47 tell:18 tengo:26 text:-33 text_$:-41 text_me:-31 textos:19
texts:19 texts_$:14 thanks:-22 thanks_for:-15 that:-26 the:68 the__call:34 the_bill:21 the_house:18 the_manager:23
the_mechanic:15 the_phone:19 the_seat:-19 the_second:-22 the_way:-15 the_wrong:-29 there:26 there_a:16 these:18
thing:19 this:-57 this_$:35 this__a:25 this__belongs:-14 this_a:-23 this_is:-23 this_isnt:-42 this_number:-15
this_phone:-70 thursday:-22 thursday_$:-24 tmrw:15 to__in:-26 to__it:25 to__me:16 to__off:-25 to__person:26
to__this:59 to__to:29 to__you:-48 to_a:19 to_call:-60 to_go:14 to_it:-14 to_me:-77 to_my:-83 to_set:17 to_somebody:18
to_speak:59 to_the:19 today_$:14 tomorrow:26 too:21 too__for:23 total:15 total_$:18 tres:-21 typing:24 un:172
un_dia:14 una:76 una_llamada:31 una_persona:24 under:-17 under_me:-19 up:-38 up_$:-24 urge:15 veces:-23 veo:21
volver:-16 volver_a:-16 want:64 want_a:25 want_to:31 wants:19 was:-42 way:-19 we:-23 we_have:-32 we_talking:-22
we_will:19 weeks:-20 weeks_$:-19 what:-30 when:-34 when__get:42 when__i:-20 when_i:-29 when_im:-39 when_you:47 who:38
who__i:49 who_am:-37 whoever:71 will:17 will__it:25 with:103 with_a:20 with_me:-27 with_someone:52 with_the:25
work:43 works:-24 would:48 would_be:18 wrong:-27 y:111 y__cuanto:21 y__digo:23 y_como:21 y_le:21 y_me:-26 y_no:23
ya:-54 ya_me:-17 yes:-50 yo:-20 you:-234 you_$:-25 you__a:34 you__im:-43 you__me:19 you__the:-26 you_call:55
you_guys:-60 you_have:-30 you_people:-71 you_pick:-19 your:-21
"""
