"""What speaks for and against `stranger`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "stranger"
BIAS = -161
WEIGHTS = """\
#abla:34 #able:-43 #ablo:-26 #abou:29 #abue:18 #acce:-34 #ache:57 #acia:-35 #acto:29 #ahor:-33 #ajes:-22 #aken:28
#algu:-24 #alki:32 #alle:49 #alre:-21 #amar:-26 #anad:37 #ance:-21 #anda:-26 #andl:27 #ando:64 #anej:59 #anks:-40
#answ:-36 #anym:-31 #aqui:209 #arca:110 #arda:-44 #aren:22 #arge:-21 #arre:-20 #arte:-25 #atio:-22 #auto:-27
#aved:-45 #avor:-26 #back:-33 #been:43 #befo:30 #belo:36 #bill:-19 #blan:61 #blar:-31 #bloc:-37 #boar:18 #body:95
#bout:28 #buel:18 #busc:80 #busi:20 #cado:81 #call:-71 #came:-38 #canc:-18 #cand:76 #caro:34 #cars:-19 #ccep:-32
#cept:-33 #cesa:-21 #char:-23 #ched:52 #cias:-34 #cion:-20 #cita:44 #ckin:-37 #clie:92 #como:-25 #conf:43 #cono:105
#cont:38 #cosa:-22 #creo:30 #cupo:-18 #cust:85 #dado:-43 #dent:21 #digi:24 #does:48 #dond:-19 #dont:-73 #driv:30
#each:48 #eady:-32 #eant:77 #eard:31 #ease:-35 #eces:-41 #ecio:21 #econ:-29 #edes:18 #eels:18 #efie:-19 #efon:72
#efor:30 #eglo:-19 #ehic:50 #ejor:-23 #elef:72 #ella:33 #elon:37 #ende:-31 #enes:32 #engo:82 #enme:-22 #enor:87
#ensa:31 #ente:81 #eone:-21 #eopl:-24 #epta:-24 #equi:104 #eres:-48 #erso:32 #esar:-23 #esnt:67 #esta:43 #este:93
#ever:34 #ewhe:-32 #exti:26 #fall:40 #favo:-26 #fier:-20 #fono:72 #fore:25 #forg:-19 #from:-19 #fund:60 #gave:-26
#give:-21 #goin:-28 #grac:-34 #guar:-42 #guie:-23 #guna:27 #guys:-50 #hago:-22 #hank:-46 #harg:-22 #have:68 #hear:28
#here:116 #hers:22 #hese:-25 #hicl:47 #hing:-25 #hink:63 #hoev:44 #hone:69 #hora:-30 #icle:49 #idea:48 #iden:-26
#iene:69 #ient:100 #iero:-57 #ight:-25 #igit:24 #inda:64 #ines:19 #ingu:101 #iniv:31 #inte:-39 #isnt:177 #ista:27
#ivan:31 #ivoc:105 #king:57 #know:157 #lama:-32 #land:43 #leas:-35 #lefo:72 #leva:18 #lgui:-23 #lien:88 #life:20
#like:-21 #lind:71 #line:37 #live:64 #lkin:32 #llam:-41 #lleg:21 #ller:50 #lock:-39 #look:39 #lrea:-21 #lvid:-30
#mama:22 #mand:-23 #mane:59 #marc:118 #mari:21 #mber:69 #mean:95 #mejo:-23 #mens:21 #ment:-18 #meon:-21 #mero:52
#mewh:-20 #migo:19 #mind:-26 #mine:20 #ming:-19 #mini:31 #mist:32 #mome:-19 #mond:-25 #mont:-28 #more:-68 #must:70
#nada:22 #name:203 #ncel:-18 #nday:-26 #nden:37 #nece:-32 #need:-83 #nejo:54 #ness:21 #neve:51 #nfun:61 #nger:-28
#ngun:101 #nice:26 #niet:26 #ning:75 #niva:31 #nobo:83 #nora:18 #nozc:113 #nsaj:21 #nswe:-36 #nter:-43 #ntra:38
#nuev:43 #numb:71 #nume:41 #nymo:-31 #oard:18 #obod:83 #ocad:84 #ocki:-37 #ocup:-23 #oday:-19 #oesn:67 #oeve:44
#oing:-40 #okin:53 #olvi:-31 #omen:-19 #omeo:-21 #omer:96 #omin:-18 #onda:-29 #onde:-20 #ones:-23 #onfu:58 #onge:-33
#ongs:37 #onoz:113 #onte:-21 #onth:-33 #ontr:48 #ooki:53 #ople:-24 #orry:23 #orth:-37 #otro:23 #ould:-22 #oure:35
#ours:21 #ouve:62 #oved:18 #owne:68 #ozco:113 #para:18 #part:-32 #peop:-24 #pers:28 #phon:63 #plea:-33 #pref:-20
#pued:-38 #pull:-19 #quie:-61 #quiv:105 #raci:-38 #rata:43 #rath:-22 #rcar:45 #rdad:-45 #rday:-19 #reac:57 #read:-42
#real:-40 #reco:-26 #refi:-19 #regl:-25 #repl:-19 #rest:-32 #rged:-20 #ring:-23 #rive:32 #rmen:22 #rnin:-18 #rong:150
#rreg:-21 #rson:32 #ruck:-28 #rust:-38 #saca:-44 #sado:19 #saje:22 #save:-47 #scan:50 #self:-19 #seno:81 #shop:48
#sine:21 #sold:-24 #sona:66 #sorr:23 #stak:32 #stat:20 #sted:43 #stom:85 #stop:-34 #swer:-36 #tabl:-24 #tado:52
#take:46 #tall:41 #tate:21 #tede:18 #tele:62 #teng:92 #tere:-37 #test:-20 #teve:38 #than:-48 #ther:46 #thes:-25
#thin:38 #this:120 #tien:40 #time:-50 #tion:-26 #tire:-27 #toda:-21 #tome:84 #took:-18 #trat:42 #truc:-28 #trus:-38
#uard:-42 #uedo:-22 #ueno:-26 #ueva:21 #uevo:24 #ught:20 #uien:-39 #uier:-45 #uivo:105 #umbe:71 #umer:41 #unde:40
#undi:18 #usca:80 #uste:72 #usto:84 #vado:20 #vehi:50 #vide:-30 #vive:66 #voca:105 #want:-67 #week:-20 #what:-24
#when:-19 #wher:-54 #whoe:44 #will:-52 #wner:49 #work:-35 #wort:-37 #wron:138 #xtin:27 #ying:-22 #ymor:-31 #your:150
#youv:62 %again_later:-93 %again_later%call_off:-40 %again_later%do_it:-27 %again_later%elsewhere:23
%again_later%message:-26 %again_later%refuse:-53 %again_later%shift_it:32 %again_later%staff:32
%again_later%start_again:-44 %agree:-149 %agree%call_off:-59 %agree%phone:-31 %agree%refuse:-88 %agree%who:-18
%agree%wrong_one:-41 %away:-49 %away%on_way:-18 %away%wrong_one:-37 %bad:51 %bad%bring:24 %bad%call_off:66
%bad%meaning:-18 %bad%refuse:58 %bad%wrong_one:32 %bring%car_part:-40 %bring%doubt:20 %bring%leave_me:-35
%bring%question:41 %bring%refuse:76 %bring%staff:-26 %bring%who:18 %busy:-37 %busy%wrong_one:-33 %call_off:-145
%call_off%car:-18 %call_off%do_it:88 %call_off%elsewhere:34 %call_off%fails:-22 %call_off%family:70
%call_off%odometer:67 %call_off%on_way:33 %call_off%phone:59 %call_off%place:27 %call_off%question:110
%call_off%refuse:82 %call_off%start_again:-63 %call_off%thanks:-49 %call_off%who:148 %call_off%wrong_one:-107
%car:148 %car%car_part:-21 %car%do_it:77 %car%fails:-32 %car%gone_car:53 %car%message:25 %car%phone:80
%car%question:49 %car%refuse:168 %car%wrong_one:-36 %car_part:-110 %car_part%do_it:-41 %car_part%wrong_one:-62
%do_it:-18 %do_it%gone_car:77 %do_it%message:-20 %do_it%phone:21 %do_it%question:43 %do_it%refuse:137 %do_it%who:27
%doubt:86 %doubt%message:24 %doubt%question:61 %doubt%staff:106 %doubt%who:22 %doubt%wrong_one:77 %elsewhere:38
%elsewhere%family:-27 %elsewhere%refuse:128 %elsewhere%staff:18 %elsewhere%wrong_one:88 %fails:-59 %fails%family:20
%fails%gone_car:31 %fails%phone:19 %fails%refuse:-29 %fails%wrong_one:-18 %family:105 %family%gone_car:35
%family%phone:83 %family%refuse:55 %family%who:32 %family%wrong_one:41 %gone_car%phone:93 %gone_car%question:-23
%gone_car%refuse:-22 %gone_car%staff:33 %gone_car%who:-62 %gone_car%wrong_one:-80 %how_long:-50 %leave_me:-144
%leave_me%refuse:24 %leave_me%wrong_one:-96 %machine:-76 %machine%refuse:-19 %machine%staff:-51
%machine%wrong_one:-57 %meaning:-25 %meaning%refuse:-37 %message%odometer:35 %message%phone:-45 %message%staff:60
%message%who:23 %money:-126 %money%staff:-18 %money%who:25 %money%wrong_one:-71 %noise:-34 %odometer%phone:30
%odometer%refuse:78 %odometer%wrong_one:-25 %on_way%refuse:52 %on_way%wrong_one:35 %opening:-20 %pay_day:-30
%pay_day%season:-37 %phone:37 %phone%question:56 %phone%refuse:57 %phone%staff:-90 %phone%start_again:-35 %place:-38
%place%question:-33 %place%shift_it:20 %place%wrong_one:-38 %question:-159 %question%refuse:128 %question%shift_it:22
%question%staff:85 %question%who:-43 %question%wrong_one:-185 %refuse%season:-24 %refuse%start_again:-91
%refuse%thanks:-44 %refuse%who:266 %refuse%wrong_one:61 %season:-31 %season%wrong_one:18 %shift_it:21
%shift_it%staff:68 %shift_it%who:23 %shift_it%wrong_one:46 %smoke_smell:-23 %staff:42 %staff%start_again:-19
%staff%who:42 %start_again:-106 %start_again%who:-18 %start_again%wrong_one:-68 %thanks:-63 %who:186
%who%wrong_one:-42 %wrong_one:329 @?:-77 @after_visit:-93 @car:-50 @confirm:-100 @confirm_stop:-65 @later:-34
@odometer:-50 @offers:-85 @reading:-36 @time:-34 @times:-152 ^_aqui:160 ^_can:-26 ^_car:-19 ^_de:-78 ^_do:-85
^_dont:-121 ^_el:32 ^_ese:82 ^_este:92 ^_going:-22 ^_got:-80 ^_had:-25 ^_how:-46 ^_i:81 ^_ill:-19 ^_im:55 ^_is:-52
^_me:30 ^_mejor:-18 ^_mi:-20 ^_my:-18 ^_never:54 ^_new:18 ^_ni:18 ^_no:-106 ^_nobody:81 ^_not:37 ^_numero:23
^_nunca:37 ^_que:-51 ^_quiero:-18 ^_sorry:37 ^_soy:60 ^_stop:-68 ^_that:29 ^_the:-24 ^_there:70 ^_this:208 ^_what:-37
^_who:-54 ^_wrong:119 ^_ya:-183 ^_yo:131 ^_your:-28 ^_youre:20 ^_youve:52 a:61 a__car:-28 a__of:31 a__taller:25
a__to:23 a_car:60 a_customer:45 a_ese:31 a_este:-24 a_guy:-25 a_person:-33 a_real:-28 about:29 about_$:34 ahora:-26
alguien:-23 all:-18 already:-21 am:39 am_$:39 and:41 and__a:18 and__dont:29 and__is:20 and_have:24 answer:-34 any:79
anymore:-31 anymore_$:-21 aqui:216 aqui_$:41 aqui_no:154 are:48 are_$:70 are_you:-30 arreglo:-19 ask:-34 at_a:22
back:-31 bad:-18 be:19 been:43 been__your:41 been_to:45 before:30 belongs:37 belongs_to:37 bill:-18 bill_was:-42
blocking:-36 bus:46 busca:41 business:21 but:20 but_im:21 by:65 by__name:64 by_that:64 call:-50 call_$:-19 cambio:26
cambio_de:23 can:-47 car:44 car_$:26 car_to:32 carro__no:-52 carro_con:20 carro_ya:-50 cars:-19 cel:90 charged:-19
cita:44 cliente:85 como:-24 con:58 con__dueno:-22 con_el:-22 con_ese:21 con_ustedes:35 conozco:122 conozco_$:83
could:-21 creo:30 creo_que:43 customer:83 customer_$:41 de:84 de__es:-40 de__taller:38 de_donde:-20 de_numero:27
de_persona:29 de_que:24 de_quien:-40 did:-27 did__get:-25 did_you:-25 do:-132 do__have:-18 do__know:-32 do_i:-45
do_you:-43 does:-19 doesnt:67 donde:-19 done:-31 dont:-73 dont__a:90 dont__any:64 dont__it:-43 dont__me:-30
dont__that:-101 dont__the:-35 dont__this:-44 dont__you:46 dont__your:-18 dont_have:-68 dont_know:209 dont_text:-30
dont_think:-34 dont_want:-32 drive:33 drive_$:31 dueno:-19 dueno_$:-29 el:83 el__de:51 el__no:46 el_carro:-65
el_numero:77 el_que:22 el_telefono:-20 ella:34 equivocado:81 equivocado_$:40 equivocado__numero:18 equivocado_de:25
era:27 era_$:23 es:141 es_$:-35 es__el:33 es__mi:63 es__numero:25 es_de:93 es_el:43 es_este:-78 es_mi:40 es_mio:-54
es_para:45 es_usted:26 esa:36 ese:126 ese__no:56 ese_carro:-89 esta:68 este:142 este_$:-38 este__es:79 este__no:22
este_cel:76 este_no:24 este_telefono:81 ever:-42 ever_$:-40 favor:-26 for_$:26 for_someone:18 for_that:-23 from:-19
gave:-26 get:-57 get__number:-35 get_my:-18 going:-28 got:-132 got_$:-18 got__wrong:38 got_a:-63 got_it:-20
got_the:35 gracias:-34 gracias_$:-22 guy:27 guys:-50 guys_$:-26 hablan:54 hablar:-27 hablar_con:-23 hablo:-33
hablo_$:-25 had:-21 had_a:19 hago:-22 hago_$:-21 have:55 have__wrong:59 have_a:63 have_never:71 have_someone:-23
have_that:-26 hay:37 he:218 he_ido:24 heard:31 heard_of:32 her:68 here:109 here_$:67 him:52 his:80 how:-53
how__you:-32 how_did:-24 i:64 i__a:-27 i__drive:31 i__in:56 i__know:113 i__my:-21 i__never:60 i__the:46 i__this:39
i__to:-33 i__want:-27 i__you:-29 i_am:43 i_dont:44 i_got:-35 i_have:45 i_just:34 i_know:-40 i_live:56 i_never:-58
i_take:33 i_think:24 i_want:-32 id__talk:-18 id_rather:-20 idea:48 ido:24 ill:-36 im:87 im__the:65 im_not:175
in__and:26 in__car:-29 in_another:24 interested:-29 is_$:-20 is_a:49 is_it:-19 is_my:18 is_no:74 is_not:114
is_this:-131 is_wrong:-26 isnt:177 it:-180 it_$:-70 it__this:-23 it_on:-23 just__this:28 just_got:23 know:159
know_$:-28 know_what:37 know_who:20 know_you:55 la:26 la__el:18 la__que:27 la_persona:45 le:-51 life:20 like:-21
line:22 live:49 live_in:51 lo:-117 lo_arreglo:-19 lo_hago:-21 lol_$:35 longer:-36 longer__the:-18 longer_have:-18
looking:45 los:41 los_conozco:63 mal:146 mal_$:74 mal_el:59 mama:22 manejo:54 mas:-40 me_$:121 me__con:47
me__nada:-18 me_in:18 mean:18 meant:77 mejor:-23 mensaje:45 mensajes:-22 mensajes_$:-19 mi:28 mi_$:45 mi_numero:-50
mind:-23 mine:24 mine_$:26 minivan:31 mio:-56 mom:18 momento:-18 month:-33 month_$:-29 more:-38 moved:18 must:70
must_have:31 my__is:39 my__not:21 my_car:21 my_name:43 my_number:-72 my_old:18 nada_$:-25 name:106 necesario:-21
need:-51 never:54 never__a:40 never__of:32 never__to:40 never_been:47 never_heard:32 new:-52 ni:145 ni__conozco:22
ni_los:18 nice:27 ningun:76 ninguna:27 no:167 no_$:-187 no__at:25 no__carro:74 no__cliente:55 no__conozco:70
no__de:100 no__el:19 no__esa:24 no__este:102 no__have:-18 no__here:86 no__i:-33 no__is:-43 no__lo:-30 no__mi:32
no__ni:-36 no__ningun:77 no__ninguna:29 no__para:41 no__quien:48 no__tengo:-18 no__yo:48 no__you:-18 no_and:-37
no_car:41 no_conozco:30 no_es:190 no_esta:63 no_gracias:-20 no_hay:41 no_i:-23 no_idea:42 no_lo:-31 no_longer:-36
no_los:47 no_me:-34 no_more:-33 no_not:-35 no_one:74 no_se:114 no_soy:254 no_tengo:44 no_thanks:-18 no_tiene:28
nobody:83 not:235 not_$:-21 not__car:61 not__customer:63 not__i:22 not__it:-23 not__month:-29 not__you:33 not_for:-22
not_interested:-27 not_my:133 not_now:-59 not_the:107 not_this:-44 not_yet:-45 now:-87 now_$:-52 nueva:22 nuevo:23
nuevo_$:22 number:48 number_$:-60 number_is:-28 numero:43 numero_$:-36 numero_de:26 numero_equivocado:32
numero_es:-24 nunca_he:29 o:-42 ocupo:-18 of:33 of_that:19 of_you:27 oil:-38 on:-80 on_this:-23 one:43 otra_$:35
otra_vez:-23 otro:23 otro_$:19 out_of:-19 own:-44 owner:54 para:19 para_mi:35 parte:-24 people:-24 person:-34
person_$:-60 persona:71 persona_$:44 persona_que:30 phone:74 phone__to:28 phone_belongs:22 phone_me:-32 please:-33
please_$:-18 por:-49 por_telefono:-22 por_un:20 prefiero:-19 puedo:-18 pull:-18 put:-26 put_the:-28 que:66
que__es:-41 que_busca:36 que_no:-18 que_taller:23 quien:-48 quien_es:-44 quienes:32 quienes_son:32 quiero:-34
rather:-22 rather__to:-18 rather_talk:-18 real:-32 real_person:-27 ring:-22 saved:-45 se:117 se__de:21 se__es:38
se__que:47 se_equivocado:46 see:-27 senor:57 senora:19 shop:48 shop_$:41 sir:-18 sir_$:-18 so:-52 so_$:-25 so_no:-25
sold:-23 some:26 someone:-21 someone__me:-21 someone_else:43 somewhere:-20 sorry:23 sorry__is:39 soy:385
soy__persona:65 soy_cliente:61 soy_el:27 soy_esa:43 soy_la:73 soy_yo:46 state:24 stop:-32 su:58 su_taller:28 take:18
take_the:33 talk:-38 talk__a:-26 talk_to:-37 talking:33 taller:42 taller_$:24 te:39 telefono:72 telefono_$:44
tengo:83 tengo_$:36 tengo_carro:84 text_me:-21 texting:27 thanks:-37 thanks_$:-22 that_car:-20 that_is:18
that_name:64 the:-19 the__anymore:-32 the__guy:32 the__no:30 the__number:31 the__of:19 the__person:22 the__you:23
the_bus:44 the_owner:63 the_phone:-41 the_truck:-28 the_van:-28 the_wrong:78 there:56 there__no:74 there_is:67
these:-25 think:63 think__is:23 think_you:51 this:120 this_$:-85 this__a:42 this__belongs:39 this__for:21
this__the:27 this_a:-23 this_is:154 this_isnt:134 this_month:-29 this_phone:84 this_week:-22 tiene:27 tienen__el:21
time:-61 time_$:-28 tires:-19 to__person:-18 to__shop:39 to_me:28 to_text:37 to_you:22 to_your:46 today:-19
today_$:-18 too:-23 took:-18 truck:-28 trust:-38 un:32 una_persona:-20 up:-19 use:22 usted:54 usted_$:31 ustedes:18
ustedes_$:34 van:-33 vehicle:48 want:-58 want_to:-23 way:-21 week:-25 week_$:-25 what:-18 what__wrong:-18
what__your:33 what_is:-38 wheels:19 where:-23 who:-22 who__are:66 who__it:-31 who__this:-50 who__you:-48 who_is:-77
who_you:103 whoever:44 whoever_you:27 why:-28 why_not:-20 will:-51 with:18 with_you:24 work:-31 work_$:-19 worth:-37
wrong:138 wrong_$:-22 wrong_guy:42 wrong_number:118 y:-28 ya:-98 ya__es:-61 ya__tengo:-40 ya__tiene:28 ya_no:-73
ya_se:-18 yet:-50 yet_$:-41 yo:226 yo_$:25 yo__soy:62 yo__tengo:33 yo_le:-23 yo_ni:121 yo_no:122 yo_soy:31 you:98
you_$:74 you__have:27 you__me:-18 you__the:56 you__to:38 you_are:59 you_get:-26 you_got:24 you_guys:-48 you_have:38
you_know:-20 you_must:47 you_my:-20 you_put:-28 you_think:43 you_want:21 your:90 your__for:19 your_customer:29
your_shop:21 youre:35 yours:29 youve:62
"""
