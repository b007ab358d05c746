"""What speaks for and against `stranger`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "stranger"
BIAS = -194
WEIGHTS = """\
#abla:41 #able:-50 #ablo:-25 #abou:25 #acce:-37 #ache:74 #acia:-33 #ahor:-27 #aken:31 #algu:-36 #alki:38 #alle:53
#alre:-29 #amar:-31 #anad:56 #anda:-29 #ando:64 #anej:76 #anic:-34 #anks:-26 #answ:-38 #anym:-36 #aqui:244 #arca:116
#arda:-52 #aren:48 #arme:30 #arte:-39 #asnt:34 #augh:25 #auto:-25 #aved:-43 #back:-36 #been:75 #befo:28 #belo:54
#blan:76 #blar:-38 #bloc:-42 #body:116 #book:26 #busc:91 #busi:29 #cado:108 #call:-83 #came:-39 #cana:35 #cand:80
#caro:39 #cars:-25 #cast:35 #ccep:-35 #cept:-36 #cesa:-26 #char:-26 #ched:70 #cias:-32 #cita:69 #ckin:-43 #clie:117
#comi:-29 #como:-25 #conf:75 #cono:142 #cont:44 #creo:37 #cupo:-27 #cust:100 #cycl:28 #dado:-43 #daug:26 #dent:28
#digi:30 #does:53 #dont:-86 #down:-27 #driv:61 #dude:45 #duen:-27 #each:62 #eady:-45 #eant:82 #eard:52 #eces:-41
#echa:-28 #econ:-29 #efon:90 #efor:28 #ehic:55 #ejor:-27 #elef:90 #ella:50 #elon:55 #ende:-34 #enes:42 #engo:105
#enor:103 #ensa:38 #ente:102 #eopl:-34 #epta:-29 #equi:151 #eres:-66 #erso:38 #esar:-26 #esnt:65 #espo:-27 #esta:58
#este:119 #evad:36 #even:28 #ever:32 #ewhe:-37 #exti:36 #fall:49 #ffic:37 #fice:38 #fono:91 #forg:-28 #from:-30
#fund:88 #gave:-26 #ghte:25 #give:-25 #goin:-38 #grac:-33 #guar:-49 #guie:-35 #guna:33 #guys:-55 #hace:-28 #harg:-25
#have:100 #hear:46 #here:149 #hers:34 #hese:-32 #hicl:55 #hing:-26 #hink:81 #hoev:43 #hone:90 #hora:-25 #hosp:31
#hter:26 #icle:57 #idea:58 #iden:-28 #iene:79 #ient:118 #iero:-71 #ight:-36 #igit:30 #inda:75 #ines:26 #ingu:132
#iniv:25 #inte:-54 #isnt:228 #ista:25 #ital:30 #ivan:25 #ivoc:155 #king:71 #know:186 #lama:-40 #land:38 #leci:29
#lefo:90 #lgui:-35 #lien:111 #life:29 #lind:81 #line:43 #list:-25 #live:65 #lkin:38 #llam:-55 #llec:29 #lled:-25
#ller:57 #lock:-45 #look:48 #lrea:-29 #lvid:-30 #mama:28 #mane:74 #marc:123 #mber:88 #mean:100 #mejo:-27 #mero:58
#mind:-41 #ming:-31 #mini:25 #mist:36 #mond:-29 #mont:-35 #more:-94 #move:32 #must:82 #name:220 #nden:47 #nece:-47
#need:-120 #nejo:66 #ness:29 #neve:67 #nfun:89 #nged:28 #nger:-42 #ngun:132 #ning:89 #niva:25 #nobo:114 #nozc:152
#nswe:-38 #nter:-58 #ntra:39 #nuev:51 #numb:76 #nume:49 #nymo:-36 #obod:114 #ocad:119 #ocki:-42 #ocup:-33 #oesn:65
#oeve:43 #offi:38 #oing:-51 #okin:71 #olvi:-32 #omer:110 #omin:-29 #onda:-32 #ones:-32 #onfu:86 #onge:-46 #ongs:48
#onoz:152 #onth:-39 #ontr:52 #ooki:71 #ople:-34 #orth:-40 #ospi:31 #otro:32 #oure:29 #ours:30 #ouve:85 #oved:26
#owne:102 #ozco:152 #part:-36 #peop:-34 #pers:34 #phon:85 #pita:31 #pref:-31 #pued:-47 #quie:-63 #quiv:151 #raci:-36
#rata:44 #rath:-37 #rcan:68 #rcar:50 #rdad:-56 #reac:71 #read:-55 #real:-48 #reco:-31 #regl:-25 #rest:-44 #rive:64
#rmen:28 #rnin:-29 #rong:180 #rson:38 #ruck:-34 #rust:-46 #saca:-40 #saje:28 #save:-46 #scan:65 #seno:98 #shop:81
#sine:29 #sold:-28 #sona:89 #spit:31 #stak:36 #stat:29 #sted:43 #stom:100 #stop:-47 #suyo:54 #swer:-38 #tado:60
#take:57 #tall:49 #tate:30 #tele:80 #teng:113 #tere:-52 #teve:43 #than:-27 #ther:47 #thes:-32 #thin:54 #this:122
#tien:34 #time:-71 #ting:35 #tion:-40 #tire:-27 #toda:-28 #tome:100 #took:-26 #trat:43 #truc:-34 #trus:-46 #uard:-49
#uedo:-26 #ueno:-37 #ueva:29 #ught:38 #uien:-51 #uier:-46 #uivo:151 #umbe:79 #umer:49 #unde:58 #undi:32 #usca:100
#usin:29 #uste:83 #usto:99 #vado:25 #vehi:55 #vide:-30 #vive:83 #vivo:30 #voca:155 #want:-67 #week:-30 #what:-41
#wher:-73 #whoe:43 #wife:38 #will:-62 #wned:34 #wner:68 #work:-41 #wort:-40 #wron:169 #xtin:37 #ycle:28 #ying:-31
#ymor:-36 #your:143 #youv:85 %again_later:-103 %again_later%call_off:-60 %again_later%car:-26
%again_later%elsewhere:46 %again_later%message:-25 %again_later%refuse:-77 %again_later%shift_it:52
%again_later%staff:35 %again_later%start_again:-54 %agree:-115 %agree%call_off:-48 %agree%family:27 %agree%refuse:-66
%agree%wrong_one:-42 %away:-38 %away%family:42 %away%wrong_one:-60 %bad:64 %bad%call_off:69 %bad%refuse:60
%bad%wrong_one:54 %bring%call_off:34 %bring%car_part:-36 %bring%leave_me:-48 %bring%question:40 %bring%refuse:82
%bring%staff:-31 %bring%wrong_one:-29 %busy:-52 %busy%wrong_one:-40 %call_off:-137 %call_off%car:-46
%call_off%do_it:74 %call_off%fails:-37 %call_off%family:55 %call_off%message:26 %call_off%odometer:58
%call_off%on_way:57 %call_off%phone:36 %call_off%place:29 %call_off%question:138 %call_off%refuse:107
%call_off%shift_it:-39 %call_off%start_again:-65 %call_off%thanks:-49 %call_off%who:162 %call_off%wrong_one:-155
%car:170 %car%car_part:-27 %car%do_it:81 %car%fails:-51 %car%gone_car:57 %car%phone:84 %car%question:75
%car%refuse:234 %car%who:28 %car%wrong_one:-37 %car_part:-101 %car_part%do_it:-42 %car_part%wrong_one:-87 %do_it:-52
%do_it%family:30 %do_it%gone_car:89 %do_it%question:31 %do_it%refuse:143 %do_it%who:37 %doubt:107 %doubt%message:27
%doubt%question:81 %doubt%staff:130 %doubt%who:51 %doubt%wrong_one:94 %elsewhere:36 %elsewhere%family:-37
%elsewhere%question:-28 %elsewhere%refuse:152 %elsewhere%shift_it:41 %elsewhere%wrong_one:109 %fails:-85
%fails%refuse:-51 %family:237 %family%gone_car:55 %family%phone:92 %family%refuse:90 %family%who:26
%family%wrong_one:32 %gone_car%phone:105 %gone_car%question:-45 %gone_car%refuse:-27 %gone_car%staff:28
%gone_car%who:-78 %gone_car%wrong_one:-100 %how_long:-62 %leave_me:-148 %leave_me%message:34 %leave_me%odometer:-28
%leave_me%refuse:45 %leave_me%wrong_one:-105 %machine:-100 %machine%staff:-68 %machine%wrong_one:-75 %meaning:-36
%meaning%refuse:-47 %message:25 %message%odometer:37 %message%phone:-64 %message%staff:70 %money:-136
%money%refuse:-27 %money%staff:-25 %money%who:28 %money%wrong_one:-83 %noise:-52 %odometer:-27 %odometer%phone:25
%odometer%refuse:77 %odometer%wrong_one:-32 %on_way%refuse:57 %on_way%wrong_one:30 %opening:-27 %pay_day:-44
%pay_day%refuse:-27 %pay_day%season:-41 %phone:40 %phone%question:32 %phone%refuse:39 %phone%staff:-113
%phone%start_again:-45 %phone%who:-32 %place:-50 %place%question:-38 %place%wrong_one:-44 %question:-206
%question%refuse:166 %question%staff:87 %question%who:-59 %question%wrong_one:-224 %refuse%start_again:-103
%refuse%thanks:-38 %refuse%who:320 %refuse%wrong_one:94 %season:-44 %shift_it:29 %shift_it%staff:75 %shift_it%who:29
%shift_it%wrong_one:60 %smoke_smell:-30 %staff:41 %staff%start_again:-28 %staff%who:32 %start_again:-124
%start_again%wrong_one:-93 %thanks:-47 %who:176 %who%wrong_one:-49 %wrong_one:407 @?:-97 @after_visit:-114 @car:-36
@confirm:-67 @confirm_stop:-68 @day:-56 @offers:-107 @reading:-37 @time:-58 @times:-155 @walk_in:-48 ^_aqui:181
^_can:-27 ^_car:-33 ^_creo:47 ^_cual:27 ^_de:-102 ^_do:-103 ^_dont:-147 ^_ese:92 ^_esta:31 ^_este:123 ^_got:-95
^_had:-33 ^_he:58 ^_how:-56 ^_i:116 ^_id:-25 ^_im:81 ^_is:-70 ^_me:38 ^_mi:-29 ^_my:-33 ^_never:61 ^_no:-71
^_nobody:111 ^_not:32 ^_numero:37 ^_nunca:43 ^_que:-54 ^_quien:-35 ^_quienes:-29 ^_sorry:37 ^_soy:72 ^_stop:-70
^_te:26 ^_the:-31 ^_there:81 ^_this:291 ^_what:-53 ^_who:-59 ^_wrong:163 ^_ya:-186 ^_yo:154 ^_your:-28 ^_youve:67
a:76 a__car:-30 a__of:44 a__person:-25 a__taller:38 a_car:100 a_customer:54 a_ese:36 a_este:-25 a_guy:-29 a_new:-25
a_person:-45 a_real:-32 about:25 about_$:36 alguien:-35 all:-34 already:-29 am:41 am_$:43 and__dont:35 and__never:-27
and_dont:32 answer:-35 any:85 anymore:-36 anymore_$:-37 aqui:256 aqui_$:45 aqui__es:58 aqui__vive:75 aqui_no:188
are:55 are_$:79 are_you:-28 asi:-27 ask:-26 back:-34 been:75 been__your:57 been_to:70 before:28 belongs:48
belongs_to:48 bill_was:-40 blocking:-41 bus:46 busca:43 buscan:46 business:29 but:45 by:77 by__name:90 by_that:90
call:-54 call_$:-27 call_me:-26 can:-57 car:48 car_$:27 car__you:27 car_to:32 carro__no:-52 carro__ustedes:26
carro_con:26 carro_tengo:61 carro_ya:-57 cars:-25 cel:114 changed:25 cita:70 cliente:110 con:71 con_el:-27 con_ese:26
con_ustedes:39 conozco:160 conozco_$:84 creo:37 creo__se:25 creo_que:53 cual:26 customer:100 customer_$:50
daughter:26 de:108 de__es:-49 de__taller:42 de_el:27 de_ese:27 de_numero:29 de_persona:32 de_quien:-46 de_una:25
dejen:25 dejen_de:25 did:-35 did__get:-32 did_you:-34 do:-169 do__have:-25 do__know:-40 do_i:-49 do_you:-57 doesnt:65
done:-38 dont:-86 dont__a:115 dont__any:76 dont__it:-58 dont__me:-37 dont__that:-116 dont__the:-48 dont__this:-52
dont__what:40 dont__you:64 dont_drive:38 dont_have:-83 dont_know:264 dont_text:-29 dont_think:-46 dont_want:-50
down:-26 down_$:-25 drive:61 drive_$:62 dude:45 dueno:-31 dueno_$:-33 el:62 el__de:60 el__no:47 el_carro:-81
el_numero:95 el_ya:61 ella:44 en:-27 equivocado:108 equivocado_$:41 equivocado_de:29 era:32 es:186 es_$:-39 es__el:35
es__mi:69 es_de:135 es_el:61 es_este:-90 es_mi:70 es_mio:-66 es_para:52 es_usted:31 esa:47 esa_persona:37 ese:143
ese__no:69 ese_carro:-101 ese_senor:77 eso:-28 esta:78 este:180 este_$:-45 este__es:102 este__no:27 este__quien:-46
este__ya:32 este_cel:89 este_no:35 este_telefono:104 even:30 ever:-46 ever_$:-41 for_$:27 for_that:-31 from:-30
gave:-26 get:-69 get__number:-45 going:-38 got:-190 got_$:-25 got__guy:-27 got__wrong:46 got_a:-74 got_it:-28
got_the:40 got_this:41 gracias:-32 guardado:-49 guy:50 guys:-55 guys_$:-30 hablan:64 hablan_$:53 hablar:-34
hablar_con:-32 hablo:-32 hablo_$:-26 had:-48 have:77 have__wrong:80 have_a:66 have_never:83 have_that:-33 he:286
he__a:32 he_ido:34 he_llevado:30 heard:52 heard__you:36 heard_of:52 her:132 here:168 here_$:68 hes:42 him:107
him_$:40 his:186 hospital:31 how:-64 how__you:-41 how_did:-32 i:67 i__a:-36 i__drive:33 i__in:66 i__know:145
i__my:-30 i__never:69 i__own:26 i__the:51 i__this:41 i__to:-37 i__want:-36 i__you:-25 i_am:45 i_dont:55 i_got:-41
i_have:52 i_just:36 i_know:-42 i_live:65 i_never:-72 i_only:27 i_take:49 i_think:29 i_want:-38 id:-30 id_rather:-30
idea:58 ido:34 ido_a:33 if:-27 ill:-49 im:137 im__the:75 im_down:-25 im_not:188 in:41 in__and:30 in__car:-32
in__state:34 in_another:38 interested:-40 interested_$:-26 is:44 is__bill:34 is_a:63 is_his:87 is_it:-30 is_my:27
is_no:88 is_not:138 is_the:39 is_this:-181 is_wrong:-32 isnt:228 it:-173 it_$:-87 it__his:42 it__this:-26 it_is:55
it_on:-26 just__this:33 know:197 know_$:-35 know__you:27 know_what:42 know_you:73 la__que:43 la_persona:63 le:-70
life:29 live:52 live_in:62 llevado:30 lo:-151 longer:-49 looking:61 looking_for:62 los:57 los_conozco:84 mal:173
mal_$:82 mal_el:72 mama:28 manejo:66 mas:-31 me:-29 me_$:119 me__con:61 meant:83 mejor:-27 mensaje:48 mi_$:51
mi_numero:-62 mind:-34 minivan:25 mio:-74 mom:26 month:-39 month_$:-32 more:-58 more_$:-25 moved:27 must:77
must_be:49 must_have:34 my:-40 my__is:37 my__was:-40 my_bill:-41 my_car:35 my_name:32 my_number:-64 my_own:-27
nada_$:-25 name:115 necesario:-26 need:-74 never:72 never__a:41 never__of:52 never__to:52 never_been:67
never_heard:52 new:-67 ni:181 ni__conozco:41 ni__tengo:61 ni_carro:61 ni_los:36 ningun:102 ninguna:33 no:224
no_$:-186 no__at:27 no__carro:77 no__cliente:79 no__conozco:87 no__de:123 no__el:34 no__esa:33 no__este:100
no__guardado:-45 no__here:101 no__i:-38 no__is:-47 no__la:36 no__lo:-30 no__mi:47 no__mio:-90 no__nadie:27 no__ni:-39
no__ningun:94 no__ninguna:30 no__para:49 no__quien:60 no__yo:73 no_and:-53 no_car:45 no_conozco:32 no_es:243
no_esta:66 no_hay:34 no_i:-27 no_idea:50 no_longer:-47 no_los:50 no_me:-30 no_more:-48 no_not:-36 no_one:88 no_se:116
no_soy:340 no_tengo:54 no_tiene:26 no_vive:83 nobody:114 nobody_here:56 nombre_$:29 not:274 not_$:-34 not__car:95
not__customer:75 not__month:-34 not__you:43 not_a:25 not_ever:-41 not_her:59 not_him:80 not_interested:-36 not_me:160
not_my:171 not_now:-69 not_the:114 not_this:-49 not_worth:-26 not_yet:-56 now:-105 now_$:-57 nueva:30 nuevo_$:27
number:64 number_$:-62 number__this:-43 number_is:-37 numero:51 numero_$:-34 numero__es:-31 numero__no:32
numero_equivocado:38 numero_es:-25 nunca_$:-35 nunca__ido:31 nunca_he:38 nunca_me:-36 o:-62 ocupo:-27 of:65 of_you:38
office:38 office_$:31 oil:-28 on:-112 on_this:-27 one:36 otra_$:38 otra_vez:-32 otro:32 out_of:-25 own:-39
own__car:44 own_a:54 own_that:-72 owner:72 para_mi:43 parte:-32 people:-34 pero:25 person:-51 person_$:-79 persona:95
persona_$:48 persona_que:46 phone:99 phone__to:32 phone_anymore:38 phone_belongs:25 phone_me:-53 por:-69
por_telefono:-28 puede:-28 put:-39 put_the:-32 que:64 que__es:-49 que_busca:38 que_buscan:46 que_numero:-42 quien:-58
quien__usted:37 quien_es:-55 quienes:42 quienes_son:32 quiero:-43 quit:25 rather:-37 reached:75 real:-39
real_person:-34 ring:-25 saved:-43 se:128 se__de:25 se__es:39 se__que:54 se_equivocado:64 se_quienes:78 see:-35
senor:69 shop:72 shop_$:66 so:-73 so_$:-29 so_no:-35 sold:-27 some:35 someone_$:-35 someone_else:59 sorry__is:38
soy:484 soy__persona:94 soy_cliente:84 soy_esa:49 soy_la:88 soy_yo:73 state:34 stop:-45 su:58 su_taller:33 suyo:54
take:26 take_the:49 talk:-51 talk__a:-30 talk_to:-49 talking:38 taller:50 taller_$:34 te:47 telefono:91 telefono_$:43
tengo:109 tengo_$:41 tengo__este:-33 tengo_carro:89 tengo_guardado:-45 texting:37 that_car:-26 that_name:90
the__anymore:-43 the__guy:35 the__no:29 the__number:37 the__of:25 the__oil:-31 the__person:27 the_bus:46 the_car:-41
the_owner:73 the_phone:-59 the_truck:-28 the_van:-38 the_wrong:93 there:49 there__no:88 there_is:79 these:-32
think:71 think_so:-29 think_this:42 think_you:64 this:122 this_$:-116 this__a:64 this__belongs:46 this__his:65
this__my:29 this__not:77 this__the:37 this_a:-30 this_is:203 this_isnt:180 this_month:-34 this_phone:81 this_was:42
this_week:-34 tiene:26 time:-80 time_$:-39 to:-33 to__shop:49 to_text:39 to_your:61 took:-26 truck:-34 trust:-46
una_persona:-34 up:-35 usa:70 usted:68 usted_$:36 ustedes_$:34 van:-44 vehicle:56 vez:-26 vive:83 vivo:30 want:-51
want_to:-28 we:-31 week:-29 week_$:-36 what:-33 what__wrong:-27 what__your:38 what_is:-47 where:-31 who:-29
who__are:83 who__it:-39 who__this:-63 who__you:-46 who_is:-106 who_this:-28 who_you:126 whoever:43 whoever_you:28
why:-38 why_not:-29 wife:33 will:-61 with_you:30 work:-36 worth:-40 worth_it:-25 wrong:169 wrong_guy:45
wrong_number:141 y:-56 ya:-122 ya__es:-65 ya__tengo:-41 ya__tiene:29 ya_no:-90 yet:-63 yet_$:-50 yo:277 yo__de:31
yo__manejo:66 yo__soy:75 yo__tengo:46 yo_le:-38 yo_lo:-40 yo_ni:144 yo_no:150 yo_soy:30 you:128 you_$:103
you__have:36 you__i:29 you__the:88 you__to:38 you_are:76 you_get:-34 you_guys:-54 you_have:75 you_must:59 you_put:-34
you_think:47 you_want:44 your:80 your__for:34 your_customer:31 your_shop:27 youre:29 yours:47 yours_$:38 youve:85
youve__a:62 youve_got:26
"""
