"""What speaks for and against `stranger`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "stranger"
BIAS = -194
WEIGHTS = """\
#abla:30 #able:-43 #ablo:-22 #abou:32 #acce:-38 #ache:68 #acia:-30 #acto:23 #ahor:-33 #ajes:-24 #aken:33 #algu:-32
#alki:38 #alle:59 #alre:-27 #amar:-35 #anad:42 #ance:-22 #anda:-36 #andl:24 #ando:60 #anej:77 #anic:-23 #anks:-38
#answ:-39 #anym:-26 #aqui:221 #arag:22 #arca:123 #arda:-52 #aren:34 #arge:-23 #arme:23 #arte:-31 #asnt:37 #atio:-23
#augh:22 #auto:-22 #aved:-46 #aven:23 #avor:-34 #back:-37 #been:68 #befo:30 #belo:53 #blan:70 #blar:-38 #bloc:-42
#boar:25 #body:104 #book:23 #bout:32 #busc:83 #busi:23 #cado:99 #call:-95 #came:-41 #cand:83 #caro:39 #cars:-28
#ccep:-37 #cept:-38 #cesa:-25 #char:-26 #ched:63 #cias:-29 #cita:54 #ckin:-43 #clie:108 #comi:-25 #como:-32 #conf:67
#cono:125 #cont:48 #creo:39 #cupo:-26 #cust:101 #cycl:25 #dado:-50 #daug:23 #digi:24 #does:52 #done:-25 #dont:-92
#driv:53 #duen:-25 #each:56 #eady:-41 #eant:86 #eard:47 #ease:-24 #eces:-47 #econ:-29 #edes:23 #efon:83 #efor:30
#ehic:57 #ejor:-23 #elef:83 #ella:38 #elon:53 #ende:-30 #enes:44 #engo:102 #enme:-30 #enor:87 #ensa:30 #ente:92
#eone:-22 #eopl:-32 #epta:-29 #equi:133 #eres:-62 #erso:44 #esar:-26 #esnt:74 #esta:49 #este:118 #evad:35 #even:34
#ever:30 #ewhe:-37 #exti:41 #fall:37 #favo:-34 #fono:84 #fore:26 #forg:-23 #from:-22 #fund:83 #gave:-32 #ghte:22
#give:-22 #goin:-35 #grac:-30 #guar:-49 #guie:-31 #guna:32 #guys:-57 #hank:-45 #harg:-25 #have:91 #hear:43 #here:137
#hers:36 #hese:-30 #hicl:57 #hing:-25 #hink:70 #hoev:41 #hone:90 #hora:-30 #hter:23 #icle:59 #idea:58 #iden:-27
#iene:85 #ient:114 #iero:-64 #ieta:24 #ight:-26 #igit:24 #inda:80 #ingu:125 #iniv:28 #inte:-52 #isnt:216 #ista:31
#ivan:28 #ivoc:133 #king:59 #know:174 #lama:-40 #land:39 #leas:-33 #lefo:83 #leva:23 #lgui:-31 #lien:103 #like:-24
#lind:86 #line:33 #live:62 #lkin:38 #llam:-51 #ller:65 #lock:-44 #lome:24 #look:43 #lrea:-27 #lvid:-29 #mama:22
#mand:-25 #mane:76 #marc:127 #mari:26 #mber:71 #mean:102 #mejo:-23 #mens:22 #ment:-25 #meon:-22 #mero:54 #mewh:-22
#migo:24 #mind:-34 #mine:22 #ming:-26 #mini:28 #mist:38 #mome:-22 #mond:-30 #mont:-31 #more:-81 #move:31 #must:79
#nada:24 #name:224 #ndar:-22 #nday:-32 #nden:47 #nece:-38 #need:-108 #nejo:67 #ness:23 #neve:58 #nfun:84 #nger:-34
#ngun:125 #nice:24 #ning:91 #niva:28 #nobo:98 #nora:23 #noth:23 #nozc:133 #nsaj:22 #nswe:-39 #nter:-57 #ntra:43
#nuev:51 #numb:72 #nume:44 #nymo:-26 #oard:25 #obod:98 #ocad:107 #ocki:-42 #ocup:-31 #oesn:74 #oeve:41 #oing:-49
#okin:64 #olvi:-30 #omen:-22 #omeo:-22 #omer:112 #omin:-25 #onda:-34 #ones:-30 #onfu:81 #onge:-39 #ongs:46 #only:24
#onoz:133 #onth:-36 #ontr:54 #ooki:64 #ople:-32 #orry:29 #orth:-39 #otro:27 #ould:-27 #oure:32 #ouve:68 #oved:22
#owne:99 #ozco:133 #part:-31 #peop:-32 #pers:40 #phon:84 #plea:-32 #pref:-29 #pued:-47 #pull:-22 #quie:-64 #quiv:133
#raci:-33 #rata:49 #rath:-36 #rcar:52 #rdad:-54 #reac:64 #read:-51 #real:-45 #reco:-28 #regl:-24 #rest:-42 #rged:-22
#ring:-25 #rive:55 #rmen:29 #rnin:-23 #rong:175 #rson:44 #ruck:-43 #rust:-46 #saca:-51 #saje:26 #save:-48 #scan:57
#self:-31 #seno:82 #shop:63 #sine:23 #sold:-30 #sona:83 #sorr:29 #stak:38 #stat:28 #sted:52 #stom:101 #stop:-39
#swer:-39 #tado:62 #take:52 #tall:56 #tate:29 #tede:23 #tele:74 #teng:112 #tere:-51 #teve:43 #than:-52 #ther:63
#thes:-30 #thin:46 #this:142 #tien:41 #time:-70 #ting:30 #tion:-30 #tire:-26 #toda:-24 #tome:101 #trat:49 #truc:-43
#trus:-46 #uard:-49 #uede:-22 #uedo:-24 #ueno:-34 #ueva:29 #ught:37 #uien:-50 #uier:-44 #uivo:133 #umbe:72 #umer:44
#unde:48 #undi:33 #usca:92 #uste:90 #usto:100 #vado:25 #vehi:57 #vent:25 #vide:-29 #vive:73 #vivo:32 #voca:133
#want:-82 #wasn:24 #week:-23 #what:-37 #when:-22 #wher:-64 #whoe:41 #will:-63 #wned:36 #wner:63 #work:-38 #wort:-39
#wron:163 #xtin:41 #ycle:25 #ying:-28 #ymor:-26 #your:150 #youv:68 %again_later:-99 %again_later%call_off:-51
%again_later%do_it:-24 %again_later%elsewhere:35 %again_later%message:-29 %again_later%refuse:-62
%again_later%shift_it:44 %again_later%staff:30 %again_later%start_again:-50 %agree:-121 %agree%call_off:-56
%agree%refuse:-76 %agree%who:-22 %agree%wrong_one:-41 %away:-46 %away%shift_it:24 %away%wrong_one:-56 %bad:52
%bad%bring:24 %bad%call_off:66 %bad%refuse:52 %bad%wrong_one:39 %bring:-27 %bring%car_part:-35 %bring%doubt:22
%bring%leave_me:-40 %bring%question:38 %bring%refuse:67 %bring%staff:-33 %bring%wrong_one:-27 %busy:-39
%busy%wrong_one:-34 %call_off:-142 %call_off%car:-29 %call_off%do_it:81 %call_off%elsewhere:25 %call_off%fails:-29
%call_off%family:62 %call_off%odometer:67 %call_off%on_way:48 %call_off%phone:38 %call_off%question:126
%call_off%refuse:123 %call_off%shift_it:-26 %call_off%start_again:-69 %call_off%thanks:-44 %call_off%who:157
%call_off%wrong_one:-169 %car:159 %car%car_part:-29 %car%do_it:93 %car%fails:-48 %car%gone_car:63 %car%phone:93
%car%question:51 %car%refuse:221 %car%wrong_one:-29 %car_part:-119 %car_part%do_it:-50 %car_part%staff:23
%car_part%wrong_one:-78 %do_it:-38 %do_it%gone_car:80 %do_it%message:-23 %do_it%question:37 %do_it%refuse:139
%do_it%who:34 %doubt:99 %doubt%message:24 %doubt%question:76 %doubt%refuse:-27 %doubt%staff:127 %doubt%who:33
%doubt%wrong_one:98 %elsewhere:43 %elsewhere%family:-31 %elsewhere%refuse:158 %elsewhere%shift_it:29
%elsewhere%wrong_one:96 %fails:-72 %fails%gone_car:24 %fails%refuse:-42 %family:137 %family%gone_car:35
%family%phone:94 %family%question:22 %family%refuse:61 %family%who:45 %family%wrong_one:44 %gone_car%phone:108
%gone_car%question:-38 %gone_car%refuse:-28 %gone_car%staff:32 %gone_car%who:-77 %gone_car%wrong_one:-100
%how_long:-55 %how_long%refuse:-22 %leave_me:-148 %leave_me%message:25 %leave_me%odometer:-25 %leave_me%refuse:38
%leave_me%wrong_one:-111 %machine:-88 %machine%refuse:-23 %machine%staff:-59 %machine%wrong_one:-65 %meaning:-30
%meaning%refuse:-41 %message%odometer:37 %message%phone:-57 %message%staff:57 %money:-139 %money%refuse:-22
%money%who:28 %money%wrong_one:-82 %noise:-42 %odometer%phone:29 %odometer%refuse:84 %odometer%wrong_one:-38
%on_way%refuse:56 %on_way%wrong_one:36 %pay_day:-35 %pay_day%season:-37 %phone:34 %phone%question:56 %phone%refuse:57
%phone%staff:-129 %phone%start_again:-44 %place:-47 %place%question:-34 %place%wrong_one:-37 %question:-204
%question%refuse:155 %question%shift_it:24 %question%staff:87 %question%who:-48 %question%wrong_one:-190
%refuse%start_again:-107 %refuse%thanks:-43 %refuse%who:314 %refuse%wrong_one:61 %season:-33 %shift_it:25
%shift_it%staff:72 %shift_it%who:32 %shift_it%wrong_one:52 %smoke_smell:-34 %staff:37 %staff%start_again:-27
%staff%who:36 %start_again:-124 %start_again%wrong_one:-90 %thanks:-61 %who:189 %who%wrong_one:-38 %wrong_one:358
@?:-86 @after_visit:-110 @car:-28 @confirm:-103 @confirm_stop:-60 @day:-44 @odometer:-31 @offers:-100 @reading:-28
@time:-46 @times:-168 @walk_in:-40 ^_aqui:175 ^_can:-26 ^_car:-31 ^_cual:23 ^_de:-89 ^_do:-102 ^_dont:-143 ^_ese:88
^_este:115 ^_going:-23 ^_got:-96 ^_had:-33 ^_how:-58 ^_i:92 ^_id:-24 ^_im:60 ^_is:-65 ^_me:34 ^_mi:-25 ^_never:62
^_new:26 ^_no:-76 ^_nobody:98 ^_not:50 ^_numero:22 ^_nunca:42 ^_que:-54 ^_quien:-32 ^_quienes:-28 ^_quiero:-23
^_sorry:43 ^_soy:75 ^_stop:-72 ^_that:25 ^_the:-29 ^_there:76 ^_this:253 ^_usted:23 ^_what:-54 ^_who:-65 ^_wrong:145
^_ya:-193 ^_yo:175 ^_your:-30 ^_youve:56 a:84 a__car:-33 a__of:38 a__person:-24 a__taller:36 a__to:26 a_car:93
a_customer:54 a_ese:37 a_este:-26 a_guy:-29 a_new:-23 a_person:-43 a_phone:-22 a_real:-34 about:32 about_$:38
ahora:-27 alguien:-31 all:-23 already:-27 am:45 am_$:46 and:32 and__dont:32 and__is:25 and_dont:31 and_have:23
answer:-36 any:82 anymore:-26 anymore_$:-30 aqui:230 aqui_$:39 aqui__vive:73 aqui_no:176 are:52 are_$:78 are_you:-34
asi:-23 ask:-33 back:-35 been:68 been__your:52 been_to:56 before:30 belongs:46 belongs_to:46 bill_was:-44
blocking:-41 bus:50 busca:46 buscan:38 business:23 but:25 by:80 by__name:85 by_that:85 call:-70 call_$:-29
call_me:-22 cambio:25 cambio_de:22 can:-53 car:56 car_$:40 car__you:29 car_to:35 carro__no:-55 carro_con:25
carro_tengo:58 carro_ya:-57 cars:-28 cel:108 charged:-22 cita:55 cliente:101 como:-31 con:69 con__dueno:-22
con_el:-27 con_ese:24 con_ustedes:38 conozco:142 conozco_$:84 could:-22 creo:39 creo_que:52 cual:23 customer:100
customer_$:50 daughter:23 de:87 de__es:-40 de__taller:48 de_el:25 de_ese:22 de_numero:24 de_persona:33 de_que:24
de_quien:-38 did:-33 did__get:-34 did_you:-36 do:-167 do__have:-23 do__know:-41 do_i:-52 do_you:-56 does:-22
doesnt:74 done:-40 dont:-92 dont__a:108 dont__any:69 dont__it:-54 dont__me:-37 dont__that:-118 dont__the:-37
dont__this:-47 dont__what:40 dont__you:55 dont__your:-25 dont_have:-80 dont_know:244 dont_need:-22 dont_text:-34
dont_think:-44 dont_want:-45 drive:61 drive_$:57 dueno:-27 dueno_$:-37 el:78 el_$:24 el__de:61 el__no:47 el_carro:-78
el_numero:95 el_telefono:-25 el_ya:63 ella:36 equivocado:99 equivocado_$:44 equivocado_de:23 era:29 es:167 es_$:-35
es__el:34 es__mi:70 es__numero:27 es_de:109 es_el:52 es_este:-87 es_mi:56 es_mio:-54 es_para:51 es_usted:28 esa:37
ese:138 ese__no:61 ese_carro:-102 ese_senor:66 ese_taller:22 esta:72 este:178 este_$:-41 este__es:91 este__no:27
este_cel:82 este_no:30 este_telefono:95 even:36 ever:-46 ever_$:-41 favor:-34 for_$:30 for_someone:22 for_that:-26
from:-22 garage:22 gave:-32 gave_you:-28 get:-71 get__number:-48 get_my:-22 going:-35 got:-174 got_$:-24
got__wrong:47 got_a:-75 got_it:-25 got_the:41 gracias:-29 guardado:-49 guy:36 guys:-57 guys_$:-30 hablan:58
hablar:-34 hablar_con:-34 hablo:-30 hablo_$:-23 had:-45 have:66 have__wrong:75 have_a:64 have_never:85
have_someone:-26 have_that:-31 havent:25 hay:31 he:240 he__a:31 he_ido:33 he_llevado:29 heard:47 heard_of:47 her:83
here:138 here_$:74 him:55 his:107 how:-65 how__you:-44 how_did:-34 i:73 i__a:-29 i__drive:34 i__in:63 i__know:135
i__my:-31 i__never:69 i__own:23 i__the:45 i__this:45 i__to:-34 i__want:-36 i__you:-31 i_am:49 i_dont:46 i_got:-42
i_have:52 i_just:37 i_know:-40 i_live:62 i_never:-75 i_only:29 i_take:37 i_think:32 i_want:-38 id:-30 id__talk:-23
id_rather:-32 idea:58 idea_$:-22 ido:33 ido_a:31 ill:-43 im:108 im__the:78 im_not:200 in:34 in__and:30 in__car:-32
in_another:39 interested:-38 interested_$:-24 is_$:-22 is__bill:35 is_a:57 is_his:59 is_it:-24 is_my:31 is_no:86
is_not:126 is_this:-179 is_wrong:-29 isnt:216 it:-209 it_$:-88 it__this:-24 it_on:-24 just__this:33 just_got:26
know:186 know_$:-34 know_what:42 know_who:26 know_you:63 la__que:43 la_persona:63 le:-72 like:-24 live:47 live_in:59
llevado:29 lo:-152 lol_$:23 longer:-41 looking:51 los:44 los_conozco:78 mal:164 mal_$:82 mal_el:71 mama:22 manejo:67
mas:-38 me_$:136 me__con:56 meant:86 mejor:-23 mensaje:50 mensajes:-24 mi:22 mi_$:51 mi_numero:-60 mind:-31 mine:30
mine_$:25 minivan:28 mio:-60 momento:-22 month:-35 month_$:-29 more:-54 more_$:-23 moved:22 must:74 must_be:40
must_have:35 my__is:40 my__was:-44 my_bill:-45 my_car:30 my_name:40 my_number:-73 my_old:23 my_own:-28 nada_$:-27
name:114 necesario:-25 need:-62 never:62 never__a:43 never__of:47 never__to:46 never_been:62 never_heard:47 new:-61
new_tires:-22 ni:173 ni__conozco:35 ni__tengo:58 ni_carro:58 ni_los:30 nice:24 nieta:24 ningun:96 ninguna:32 no:232
no_$:-177 no__at:26 no__carro:83 no__cliente:67 no__conozco:76 no__de:113 no__el:29 no__esa:27 no__este:101
no__here:99 no__i:-41 no__is:-48 no__la:33 no__lo:-31 no__mi:45 no__mio:-81 no__ni:-46 no__ningun:89 no__ninguna:29
no__no:-24 no__para:48 no__quien:52 no__yo:54 no_and:-47 no_car:41 no_conozco:30 no_es:226 no_esta:68 no_hay:33
no_i:-27 no_idea:49 no_lo:-27 no_longer:-41 no_los:50 no_me:-33 no_more:-46 no_not:-40 no_one:86 no_se:117 no_soy:293
no_tengo:58 no_tiene:31 no_vive:73 nobody:98 nombre_$:30 not:272 not_$:-33 not__car:85 not__customer:75 not__i:22
not__it:-25 not__month:-30 not__you:40 not_for:-25 not_interested:-35 not_my:167 not_now:-67 not_the:123 not_this:-47
not_worth:-25 not_yet:-55 now:-100 now_$:-59 nueva:30 nuevo:23 nuevo_$:26 number:52 number_$:-75 number__this:-49
number_is:-43 numero:46 numero_$:-23 numero_de:24 numero_equivocado:36 numero_es:-23 nunca_$:-38 nunca__ido:30
nunca_he:38 nunca_me:-39 o:-54 ocupo:-26 of:43 of_that:24 of_you:34 off:-26 oil:-41 on:-104 on_this:-25 one:41
only:24 otra_$:38 otra_persona:22 otra_vez:-29 otro:27 out:-24 out_of:-23 own:-48 own_a:55 own_that:-74 owner:67
para_mi:42 parte:-26 people:-32 person:-39 person_$:-80 persona:90 persona_$:47 persona_que:45 phone:96 phone_$:23
phone__to:34 phone_anymore:45 phone_belongs:27 phone_me:-44 please:-31 por:-61 por_favor:-24 puede:-23 put:-35
put_the:-32 que:71 que__es:-48 que_busca:41 que_buscan:39 que_numero:-41 que_se:23 que_taller:30 quien:-64
quien__usted:36 quien_es:-53 quienes:44 quienes_son:44 quiero:-38 quit:27 rather:-36 rather__to:-23 rather_talk:-24
real:-38 real_person:-33 ring:-22 saved:-46 se:128 se__es:43 se__que:52 se_equivocado:54 see:-33 senor:53 senora:23
shop:63 shop_$:58 so:-71 so_$:-28 so_no:-31 sold:-29 some:30 someone:-22 someone_$:-33 someone__me:-24
someone_else:53 somewhere:-22 son:26 sorry:29 sorry__is:42 soy:436 soy__persona:86 soy_cliente:72 soy_el:23
soy_esa:43 soy_la:90 soy_su:23 soy_yo:54 state:32 stop:-38 su:67 su_taller:32 take_the:37 talk:-52 talk__a:-33
talk_to:-50 talking:38 taller:57 taller_$:34 te:40 telefono:84 telefono_$:50 tengo:107 tengo_$:41 tengo__este:-32
tengo_carro:96 tengo_guardado:-45 text_me:-22 texting:41 texting_me:25 thanks:-35 that_car:-25 that_name:85 the:-46
the__anymore:-39 the__guy:36 the__no:31 the__number:42 the__of:26 the__oil:-31 the__person:28 the__you:22 the_bus:48
the_car:-23 the_owner:77 the_phone:-56 the_truck:-37 the_van:-37 the_wrong:98 there:58 there__no:86 there_is:74
these:-30 think:71 think__is:23 think_so:-28 think_this:44 think_you:60 this:142 this_$:-117 this__a:55
this__belongs:45 this__his:70 this__my:28 this__the:25 this_a:-29 this_is:199 this_isnt:171 this_month:-31
this_phone:90 this_week:-30 tiene:28 tienen__el:22 time:-79 time_$:-40 to:-28 to__shop:49 to_a:-22 to_me:23
to_text:41 to_you:26 to_your:56 too:-24 truck:-43 trust:-46 un:28 una_persona:-31 up:-44 usa:73 use:31 usted:68
usted_$:35 ustedes:23 ustedes_$:41 van:-42 vehicle:57 vez:-23 vive:73 vivo:32 want:-71 want_to:-27 wasnt:24 we:-23
week:-26 week_$:-33 what:-29 what__wrong:-23 what__your:38 what_is:-42 where:-25 who:-22 who__are:81 who__it:-35
who__this:-65 who__you:-55 who_is:-98 who_you:126 whoever:41 whoever_you:24 why:-38 why_not:-29 will:-62 with:22
with_you:32 work:-35 worth:-39 wrong:163 wrong_guy:46 wrong_number:132 y:-44 ya:-119 ya__es:-60 ya__tengo:-43
ya__tiene:31 ya_no:-77 ya_se:-22 yet:-63 yet_$:-48 yo:270 yo_$:27 yo__soy:71 yo__tengo:41 yo_le:-35 yo_lo:-42
yo_ni:145 yo_no:140 yo_soy:31 you:131 you_$:105 you__have:39 you__i:31 you__the:71 you__to:42 you_are:75 you_get:-36
you_got:27 you_guys:-56 you_have:54 you_know:-23 you_must:54 you_my:-22 you_put:-34 you_think:47 you_want:30 your:94
your__for:27 your_customer:33 your_shop:30 youre:32 yours:37 yours_$:38 youve:68
"""
