"""What speaks for and against `stranger`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "stranger"
BIAS = -160
WEIGHTS = """\
#abla:22 #able:-31 #abou:19 #acce:-26 #ache:51 #acia:-27 #acto:19 #ahor:-23 #ajes:-18 #aken:24 #algu:-25 #alki:26
#alle:50 #alre:-23 #amar:-25 #anad:30 #ance:-19 #anda:-27 #andl:19 #ando:40 #anej:54 #anks:-34 #answ:-27 #aqui:172
#arca:86 #arda:-37 #aren:25 #arte:-22 #asnt:30 #aved:-33 #aven:19 #avor:-28 #back:-27 #been:53 #befo:24 #belo:39
#blan:52 #blar:-29 #bloc:-28 #boar:21 #body:75 #book:18 #bout:19 #busc:65 #cado:84 #call:-72 #came:-27 #cand:59
#caro:27 #cars:-22 #ccep:-25 #cept:-26 #char:-19 #ched:47 #cias:-27 #cita:43 #ckin:-29 #clie:83 #comi:-20 #como:-27
#conf:53 #cono:96 #cont:33 #creo:29 #cupo:-21 #cust:76 #cycl:20 #dado:-36 #digi:20 #does:34 #done:-21 #dont:-73
#driv:40 #each:41 #eady:-33 #eant:61 #eard:36 #ease:-21 #eces:-35 #econ:-21 #edes:23 #efon:64 #efor:24 #ehic:42
#ejor:-19 #elef:64 #ella:29 #elon:40 #ende:-23 #enes:32 #engo:78 #enme:-24 #enor:70 #ensa:22 #ente:70 #eone:-22
#eopl:-21 #epta:-20 #equi:109 #eres:-44 #erso:39 #esnt:53 #esta:35 #este:92 #evad:29 #even:27 #ever:35 #ewhe:-27
#exti:30 #fall:30 #favo:-28 #fono:64 #fore:20 #fund:64 #gave:-21 #give:-18 #goin:-25 #grac:-27 #guar:-35 #guie:-25
#guna:27 #guys:-41 #hank:-41 #harg:-18 #have:75 #hear:33 #here:108 #hers:26 #hese:-24 #hicl:42 #hing:-20 #hink:54
#hoev:33 #hone:76 #hora:-20 #icle:43 #idea:46 #iene:60 #ient:88 #iero:-52 #ieta:19 #ight:-20 #igit:20 #inda:55
#ingu:97 #iniv:23 #inte:-37 #isnt:161 #ista:23 #ivan:23 #ivoc:110 #king:44 #know:129 #lama:-29 #land:31 #leas:-28
#lefo:64 #leva:18 #lgui:-24 #lien:79 #like:-20 #lind:61 #line:28 #live:46 #lkin:26 #llam:-37 #ller:53 #lock:-30
#lome:20 #look:32 #lrea:-23 #lvid:-21 #mand:-19 #mane:54 #marc:89 #mari:20 #mber:56 #mean:74 #mejo:-19 #meon:-22
#mero:48 #migo:19 #mind:-28 #mine:19 #ming:-21 #mini:23 #mist:28 #mond:-19 #mont:-19 #more:-56 #move:24 #must:60
#nada:19 #name:161 #nday:-21 #nden:33 #nece:-28 #need:-86 #nejo:46 #neve:53 #nfun:65 #nger:-24 #ngun:97 #nice:19
#ning:69 #niva:23 #nobo:70 #nora:18 #nozc:101 #nswe:-27 #nter:-41 #ntra:31 #nuev:29 #numb:57 #nume:40 #nunc:19
#oard:21 #obod:70 #ocad:91 #ocki:-28 #ocup:-25 #oesn:53 #oeve:33 #oing:-33 #okin:48 #olvi:-21 #omeo:-22 #omer:86
#omin:-20 #onda:-22 #ones:-23 #onfu:62 #onge:-27 #ongs:34 #only:19 #onoz:101 #onth:-23 #ontr:37 #ooki:48 #ople:-21
#orry:24 #orth:-28 #otro:22 #ould:-21 #oure:23 #ouve:51 #oved:18 #owne:69 #ozco:101 #part:-21 #peop:-21 #pers:36
#phon:71 #plea:-27 #pref:-22 #pued:-39 #quie:-46 #quiv:110 #raci:-30 #rata:33 #rath:-26 #rcar:36 #rdad:-39 #reac:48
#read:-42 #real:-33 #reco:-22 #rest:-28 #ring:-20 #rive:42 #rmen:21 #rnin:-18 #rong:152 #rson:39 #ruck:-32 #rust:-30
#saca:-35 #saje:18 #save:-35 #scan:44 #self:-23 #seno:65 #shop:51 #sold:-23 #sona:64 #sorr:24 #stak:28 #stat:21
#sted:51 #stom:77 #stop:-29 #swer:-27 #tado:43 #take:39 #tall:46 #tate:22 #tede:23 #tele:57 #teng:86 #tere:-36
#teve:29 #than:-46 #ther:49 #thes:-24 #thin:35 #this:126 #tien:30 #time:-53 #ting:24 #tion:-22 #tire:-21 #tome:76
#trat:32 #truc:-32 #trus:-30 #uard:-35 #uede:-18 #uedo:-21 #ueno:-24 #ueva:18 #ught:28 #uien:-33 #uier:-37 #uivo:110
#umbe:57 #umer:40 #unca:19 #unde:34 #undi:28 #usca:73 #uste:76 #usto:76 #vado:21 #vehi:42 #vent:20 #vide:-20 #vive:56
#vivo:26 #voca:110 #want:-61 #wasn:19 #what:-38 #wher:-46 #whoe:33 #will:-44 #wned:26 #wner:43 #work:-29 #wort:-27
#wron:142 #xtin:31 #ycle:20 #ying:-20 #your:112 #youv:51 %again_later:-81 %again_later%call_off:-39
%again_later%elsewhere:26 %again_later%message:-20 %again_later%refuse:-49 %again_later%shift_it:33
%again_later%staff:23 %again_later%start_again:-38 %agree:-110 %agree%call_off:-48 %agree%refuse:-64
%agree%wrong_one:-37 %away:-33 %away%shift_it:20 %away%wrong_one:-45 %bad:40 %bad%bring:19 %bad%call_off:50
%bad%refuse:41 %bad%wrong_one:26 %bring:-23 %bring%car_part:-26 %bring%leave_me:-30 %bring%on_way:-18
%bring%question:29 %bring%refuse:48 %bring%staff:-20 %bring%wrong_one:-20 %busy:-32 %busy%wrong_one:-26
%call_off:-116 %call_off%do_it:81 %call_off%elsewhere:21 %call_off%fails:-22 %call_off%family:46
%call_off%odometer:48 %call_off%on_way:35 %call_off%phone:28 %call_off%question:96 %call_off%refuse:97
%call_off%shift_it:-18 %call_off%start_again:-53 %call_off%thanks:-41 %call_off%who:126 %call_off%wrong_one:-108
%car:140 %car%car_part:-20 %car%do_it:79 %car%fails:-33 %car%gone_car:45 %car%phone:68 %car%question:36
%car%refuse:178 %car_part:-99 %car_part%do_it:-37 %car_part%wrong_one:-62 %do_it%gone_car:57 %do_it%question:30
%do_it%refuse:122 %do_it%who:24 %doubt:77 %doubt%question:55 %doubt%staff:93 %doubt%who:24 %doubt%wrong_one:75
%elsewhere:44 %elsewhere%family:-22 %elsewhere%refuse:123 %elsewhere%shift_it:22 %elsewhere%wrong_one:75 %fails:-54
%fails%gone_car:19 %fails%refuse:-32 %family:110 %family%gone_car:28 %family%phone:74 %family%refuse:47
%family%who:32 %family%wrong_one:27 %gone_car%phone:81 %gone_car%question:-21 %gone_car%refuse:-20 %gone_car%staff:26
%gone_car%who:-52 %gone_car%wrong_one:-79 %how_long:-49 %how_long%refuse:-19 %leave_me:-110 %leave_me%message:21
%leave_me%odometer:-20 %leave_me%refuse:27 %leave_me%wrong_one:-80 %machine:-67 %machine%refuse:-18
%machine%staff:-44 %machine%wrong_one:-49 %meaning:-23 %meaning%refuse:-31 %message%odometer:24 %message%phone:-42
%message%staff:42 %message%who:18 %money:-110 %money%refuse:-20 %money%staff:-18 %money%who:19 %money%wrong_one:-64
%noise:-33 %odometer%phone:24 %odometer%refuse:64 %odometer%wrong_one:-26 %on_way%refuse:39 %on_way%wrong_one:27
%pay_day:-23 %pay_day%season:-25 %phone:35 %phone%question:38 %phone%refuse:44 %phone%staff:-95
%phone%start_again:-33 %place:-35 %place%question:-23 %place%wrong_one:-28 %question:-156 %question%refuse:117
%question%shift_it:19 %question%staff:62 %question%who:-20 %question%wrong_one:-141 %refuse%start_again:-82
%refuse%thanks:-41 %refuse%who:243 %refuse%wrong_one:55 %season:-23 %shift_it:20 %shift_it%staff:52 %shift_it%who:27
%shift_it%wrong_one:37 %smoke_smell:-27 %staff:38 %staff%start_again:-21 %staff%who:29 %start_again:-97
%start_again%wrong_one:-66 %thanks:-58 %who:157 %who%wrong_one:-21 %wrong_one:306 @?:-66 @after_visit:-85 @car:-22
@confirm:-96 @confirm_stop:-56 @day:-41 @odometer:-23 @offers:-83 @reading:-28 @time:-41 @times:-144 @walk_in:-36
^_aqui:133 ^_can:-21 ^_car:-22 ^_cual:18 ^_de:-62 ^_do:-76 ^_dont:-107 ^_ese:63 ^_este:83 ^_got:-74 ^_had:-27
^_how:-46 ^_i:69 ^_im:58 ^_is:-48 ^_me:21 ^_mi:-18 ^_never:49 ^_no:-64 ^_nobody:70 ^_not:44 ^_numero:18 ^_nunca:32
^_que:-41 ^_quien:-22 ^_quienes:-20 ^_quiero:-18 ^_sorry:33 ^_soy:54 ^_stop:-51 ^_that:21 ^_the:-25 ^_there:55
^_this:191 ^_usted:18 ^_what:-44 ^_who:-48 ^_wrong:112 ^_ya:-141 ^_yo:145 ^_your:-21 ^_youve:41 a:69 a__car:-21
a__of:28 a__person:-21 a__taller:28 a__to:19 a_car:66 a_customer:39 a_ese:29 a_este:-19 a_guy:-22 a_person:-33
a_real:-24 about:19 about_$:25 alguien:-24 all:-19 already:-23 am:36 am_$:34 and:24 and__dont:21 and__is:20
and_dont:21 and_have:18 answer:-25 any:60 anymore_$:-19 aqui:179 aqui_$:32 aqui__vive:56 aqui_no:134 are:37 are_$:57
are_you:-26 asi:-19 ask:-25 back:-25 been:53 been__your:41 been_to:44 before:24 belongs:34 belongs_to:34 bill_was:-30
blocking:-28 bus:37 busca:37 buscan:28 but:19 by:59 by__name:64 by_that:64 call:-53 call_$:-20 cambio:20 cambio_de:18
can:-43 car:47 car_$:31 car__you:23 car_to:27 carro__no:-37 carro_con:20 carro_tengo:40 carro_ya:-39 cars:-22 cel:81
cita:44 cliente:77 cliente_$:18 como:-26 con:51 con_el:-21 con_ese:19 con_ustedes:33 conozco:108 conozco_$:62 creo:29
creo_que:38 cual:18 customer:76 customer_$:38 de:76 de__es:-28 de__taller:37 de_el:18 de_ese:18 de_numero:21
de_persona:25 de_que:18 de_quien:-26 did:-28 did__get:-26 did_you:-27 do:-129 do__have:-19 do__know:-26 do_i:-37
do_you:-45 does:-19 doesnt:53 done:-33 dont:-73 dont__a:75 dont__any:50 dont__it:-44 dont__me:-28 dont__that:-82
dont__the:-25 dont__this:-34 dont__what:27 dont__you:42 dont__your:-19 dont_have:-56 dont_know:175 dont_need:-19
dont_text:-27 dont_think:-30 dont_want:-36 drive:46 drive_$:42 dueno:-19 dueno_$:-27 el:57 el__de:48 el__no:33
el_carro:-57 el_numero:70 el_telefono:-18 el_ya:44 ella:27 equivocado:84 equivocado_$:36 equivocado_de:21 era:24
es:144 es_$:-21 es__el:25 es__mi:49 es__numero:24 es_de:80 es_el:40 es_este:-62 es_mi:43 es_mio:-34 es_para:35
es_usted:20 esa:29 ese:108 ese__no:44 ese_carro:-69 ese_senor:46 ese_taller:19 esta:52 este:134 este_$:-30
este__es:69 este__no:20 este_cel:60 este_no:25 este_telefono:68 even:29 ever:-33 ever_$:-29 favor:-28 for_$:23
for_that:-18 gave:-21 get:-54 get__number:-35 going:-25 got:-138 got_$:-18 got__wrong:38 got_a:-55 got_it:-22
got_the:33 gracias:-27 guardado:-35 guy:30 guys:-41 guys_$:-21 hablan:42 hablar:-25 hablar_con:-26 hablo:-20 had:-38
have:55 have__wrong:62 have_a:45 have_never:65 have_someone:-19 have_that:-23 havent:21 hay:23 he:176 he__a:24
he_ido:25 he_llevado:23 heard:36 heard_of:36 her:66 here:108 here_$:61 him:41 his:82 how:-52 how__you:-33 how_did:-26
i:57 i__a:-18 i__drive:23 i__in:45 i__know:98 i__my:-25 i__never:53 i__own:18 i__the:33 i__this:32 i__to:-27
i__want:-28 i__you:-18 i_am:39 i_dont:32 i_got:-31 i_have:37 i_just:26 i_know:-26 i_live:44 i_never:-50 i_only:23
i_take:27 i_think:24 i_want:-29 id:-22 id_rather:-23 idea:46 ido:25 ido_a:24 ill:-32 im:90 im__the:54 im_not:142
in:21 in__and:20 in__car:-22 in_another:30 interested:-24 is__bill:24 is_a:48 is_his:43 is_my:26 is_no:63 is_not:89
is_this:-131 is_wrong:-23 isnt:161 it:-174 it_$:-71 just__this:22 know:139 know_$:-23 know_what:29 know_who:19
know_you:48 la__que:32 la_persona:49 le:-54 like:-20 live:33 live_in:42 llevado:23 lo:-114 lol_$:19 longer:-30
looking:38 los:32 los_conozco:60 mal:119 mal_$:59 mal_el:52 manejo:46 mas:-32 me_$:89 me__con:41 meant:62 mejor:-19
mensaje:36 mensajes:-18 mi:19 mi_$:35 mi_numero:-44 mind:-25 mine:25 mine_$:20 minivan:23 mio:-39 month:-23
month_$:-18 more:-40 moved:18 must:56 must_be:31 must_have:25 my__is:29 my__was:-30 my_bill:-31 my_car:23 my_name:28
my_number:-51 my_own:-23 nada_$:-20 name:84 need:-53 never:56 never__a:33 never__of:36 never__to:36 never_been:49
never_heard:36 new:-53 ni:131 ni__conozco:27 ni__tengo:40 ni_carro:40 ni_los:22 nice:19 nieta:19 ningun:73 ninguna:27
no:174 no_$:-148 no__at:19 no__carro:61 no__cliente:49 no__conozco:58 no__de:83 no__el:27 no__esa:21 no__este:71
no__here:74 no__i:-27 no__is:-32 no__la:25 no__lo:-21 no__mi:34 no__mio:-56 no__ni:-31 no__ningun:65 no__ninguna:24
no__no:-20 no__para:33 no__quien:38 no__yo:44 no_and:-32 no_car:30 no_conozco:23 no_es:181 no_esta:47 no_hay:25
no_i:-20 no_idea:37 no_lo:-21 no_longer:-29 no_los:39 no_me:-29 no_more:-33 no_one:62 no_se:82 no_soy:234 no_tengo:47
no_tiene:21 no_vive:56 nobody:70 nombre_$:23 not:213 not_$:-22 not__car:60 not__customer:55 not__i:18 not__month:-18
not__you:29 not_for:-18 not_interested:-22 not_my:118 not_now:-44 not_the:87 not_this:-32 not_yet:-35 now:-70
now_$:-40 nueva:19 number:45 number_$:-46 number__this:-37 number_is:-32 numero:42 numero_$:-19 numero_de:18
numero_equivocado:30 nunca:19 nunca_$:-24 nunca__ido:23 nunca_he:30 nunca_me:-26 o:-43 ocupo:-21 of:31 of_you:26
off:-20 oil:-31 on:-83 one:28 only:19 otra_$:26 otra_vez:-21 otro:22 out:-18 own:-34 own_a:40 own_that:-51 owner:46
para_mi:28 parte:-18 people:-21 person:-25 person_$:-54 persona:69 persona_$:36 persona_que:35 phone:81 phone_$:22
phone__to:26 phone_anymore:35 phone_belongs:20 phone_me:-32 please:-27 por:-51 por_favor:-20 puede:-19 put:-26
put_the:-23 que:49 que__es:-36 que_busca:33 que_buscan:29 que_numero:-30 que_se:18 que_taller:21 quien:-40
quien__usted:26 quien_es:-35 quienes:32 quienes_son:32 quiero:-32 quit:21 rather:-26 real:-28 real_person:-23
saved:-33 se:100 se__de:20 se__es:30 se__que:37 se_equivocado:46 see:-24 senor:42 senora:18 shop:52 shop_$:44 so:-50
so_$:-19 so_no:-20 sold:-21 some:24 someone:-21 someone_$:-23 someone__me:-18 someone_else:35 son:20 sorry:24
sorry__is:28 soy:343 soy__persona:66 soy_cliente:53 soy_el:22 soy_esa:34 soy_la:71 soy_su:19 soy_yo:44 state:24
stop:-27 su:53 su_taller:24 take_the:26 talk:-39 talk__a:-24 talk_to:-38 talking:26 taller:47 taller_$:30 te:30
telefono:64 telefono_$:39 tengo:81 tengo_$:28 tengo__este:-20 tengo_carro:71 tengo_guardado:-31 text_me:-19
texting:31 texting_me:20 thanks:-31 that_car:-18 that_name:64 the:-39 the__anymore:-26 the__guy:29 the__no:22
the__number:30 the__oil:-21 the__person:24 the__you:18 the_bus:36 the_owner:53 the_phone:-40 the_truck:-27
the_van:-26 the_wrong:81 there:43 there__no:63 there_is:53 these:-24 think:55 think__is:20 think_so:-19 think_this:32
think_you:46 this:126 this_$:-84 this__a:47 this__belongs:32 this__his:53 this__my:22 this__the:21 this_a:-20
this_is:156 this_isnt:127 this_month:-19 this_phone:68 this_week:-21 tiene:18 tienen__el:19 time:-60 time_$:-30
to:-31 to__shop:38 to_me:19 to_text:29 to_you:19 to_your:44 truck:-32 trust:-30 un:24 una_persona:-24 up:-34 usa:52
use:23 usted:53 usted_$:25 ustedes:23 ustedes_$:36 van:-29 vehicle:42 vive:56 vivo:26 want:-53 want_to:-22 wasnt:19
we:-20 week_$:-23 what:-31 what__wrong:-18 what__your:26 what_is:-34 where:-18 who__are:59 who__it:-24 who__this:-45
who__you:-37 who_is:-67 who_you:93 whoever:33 whoever_you:19 why:-27 why_not:-19 will:-43 with_you:23 work:-26
worth:-27 wrong:142 wrong_guy:37 wrong_number:103 y:-36 ya:-89 ya__es:-38 ya__tengo:-31 ya__tiene:21 ya_no:-55
yet:-40 yet_$:-28 yo:230 yo_$:22 yo__he:18 yo__soy:59 yo__tengo:34 yo_le:-25 yo_lo:-25 yo_ni:102 yo_no:117 yo_soy:25
you:116 you_$:76 you__have:28 you__i:23 you__the:63 you__to:30 you_are:55 you_get:-27 you_got:24 you_guys:-40
you_have:46 you_must:40 you_put:-24 you_think:35 you_want:25 your:74 your_customer:27 your_shop:26 youre:23 yours:27
yours_$:27 youve:51
"""
