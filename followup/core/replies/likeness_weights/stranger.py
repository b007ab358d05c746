"""What speaks for and against `stranger`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "stranger"
BIAS = -199
WEIGHTS = """\
#abla:43 #able:-57 #abou:27 #acce:-43 #ache:82 #acia:-35 #acto:25 #ader:25 #ahor:-33 #aken:37 #algu:-43 #alki:43
#alle:67 #alre:-33 #amar:-35 #anad:60 #ando:70 #anej:79 #anic:-35 #anks:-29 #answ:-44 #anym:-36 #aqui:262 #arca:128
#arda:-58 #aren:51 #arge:-25 #arme:32 #arte:-42 #aske:-25 #asnt:38 #atio:-25 #augh:25 #auto:-31 #aved:-49 #avor:-29
#back:-37 #been:84 #befo:38 #belo:60 #blan:85 #blar:-43 #bloc:-48 #boar:26 #body:124 #book:29 #bout:27 #busc:99
#busi:29 #cado:119 #call:-92 #came:-50 #cana:36 #cand:89 #caro:41 #cars:-38 #cast:37 #ccep:-41 #cept:-42 #cesa:-26
#char:-27 #ched:77 #cias:-34 #cita:75 #ckin:-48 #clie:125 #comi:-36 #como:-29 #conf:82 #cono:157 #cont:43 #creo:40
#cual:25 #cupo:-30 #cust:109 #cycl:32 #dado:-48 #daug:28 #dent:32 #digi:33 #does:61 #done:-27 #dont:-106 #driv:69
#dude:49 #duen:-30 #each:69 #eady:-49 #eant:90 #eard:59 #eces:-43 #echa:-28 #ecio:26 #econ:-31 #efon:100 #efor:38
#ehic:62 #ejor:-29 #elef:100 #ella:52 #elon:61 #ende:-39 #enes:45 #engo:120 #enme:-28 #enor:113 #ensa:39 #ente:108
#eopl:-40 #epta:-34 #equi:167 #eres:-70 #erso:37 #esar:-27 #esnt:75 #espo:-28 #esta:63 #este:135 #evad:43 #even:36
#ewhe:-41 #exti:45 #fall:56 #favo:-29 #ffic:42 #fice:43 #fono:101 #fore:32 #forg:-39 #from:-41 #fund:96 #gave:-25
#gets:25 #ghte:27 #give:-28 #goin:-42 #grac:-35 #guar:-55 #guie:-41 #guna:47 #guys:-62 #hace:-36 #harg:-26 #have:113
#hear:52 #here:149 #hers:37 #hese:-34 #hicl:61 #hing:-35 #hink:86 #hoev:46 #hone:106 #hora:-29 #hosp:35 #hter:28
#icle:63 #idea:61 #iden:-25 #iene:86 #ient:127 #iero:-78 #ight:-37 #igit:33 #inda:90 #ines:26 #ingu:149 #iniv:29
#inte:-60 #isnt:257 #ista:30 #ital:34 #iten:-28 #ivan:29 #ivoc:173 #king:80 #know:198 #lama:-45 #land:43 #leci:33
#lefo:100 #lgui:-41 #lien:119 #life:36 #like:-26 #lind:97 #line:49 #list:-27 #live:68 #lkin:43 #llam:-59 #llec:33
#lled:-27 #lleg:25 #ller:69 #lock:-51 #lome:26 #look:59 #lrea:-33 #lvid:-29 #mama:30 #mane:77 #marc:143 #mari:27
#mber:95 #mean:116 #mejo:-29 #mero:68 #mewh:-25 #migo:32 #mind:-44 #ming:-38 #mini:29 #mism:-25 #mist:43 #mond:-27
#mont:-33 #more:-100 #move:40 #must:97 #nade:25 #name:228 #nden:51 #nece:-50 #need:-135 #nejo:69 #ness:29 #neve:69
#nfun:97 #nged:31 #nger:-44 #ngun:149 #nice:25 #ning:102 #niva:29 #nobo:119 #nora:26 #nozc:165 #nswe:-44 #nter:-65
#ntra:44 #nuev:53 #numb:82 #nume:58 #nymo:-36 #oard:26 #obod:119 #ocad:132 #ocki:-48 #ocup:-37 #oesn:75 #oeve:46
#offi:43 #oing:-56 #okin:83 #oles:-25 #olvi:-32 #omer:121 #omin:-37 #onda:-31 #ones:-34 #onfu:93 #onge:-49 #ongs:53
#onoz:165 #onte:-25 #onth:-38 #ontr:58 #ooki:84 #ople:-40 #orge:-31 #orth:-45 #ospi:35 #otro:35 #oure:32 #ours:31
#ouve:96 #oved:30 #owne:103 #ozco:165 #pana:25 #part:-38 #peop:-40 #pero:27 #pers:32 #phon:95 #pita:46 #pref:-32
#pued:-53 #quie:-68 #quiv:169 #raci:-38 #rata:49 #rath:-40 #rcan:76 #rcar:55 #rdad:-63 #reac:79 #read:-61 #real:-50
#reco:-34 #regl:-27 #rest:-47 #rget:-31 #rive:71 #rmen:30 #rnin:-32 #rong:191 #rson:37 #ruck:-41 #rust:-52 #saca:-51
#saje:28 #save:-52 #scan:71 #seno:108 #shop:90 #sine:29 #sold:-33 #sona:98 #spit:35 #stak:43 #stat:31 #sted:58
#stom:110 #stop:-51 #suyo:56 #swer:-44 #tado:66 #take:58 #tall:60 #tate:32 #tede:25 #tele:90 #teng:130 #tere:-56
#teve:42 #than:-32 #ther:46 #thes:-34 #thin:50 #this:132 #tien:40 #time:-79 #ting:43 #tion:-43 #tire:-33 #toda:-29
#tome:109 #took:-26 #trat:48 #truc:-41 #trus:-52 #uard:-55 #uede:-25 #uedo:-28 #ueno:-42 #ueva:30 #ught:42 #uien:-57
#uier:-52 #uite:-28 #uivo:169 #umbe:86 #umer:58 #unde:62 #undi:37 #usca:111 #usin:30 #uste:99 #usto:108 #vado:31
#vehi:62 #vide:-29 #vive:94 #vivo:34 #voca:169 #want:-70 #wasn:25 #what:-52 #when:-26 #wher:-82 #whoe:46 #wife:47
#will:-69 #wned:38 #wner:65 #work:-42 #wort:-44 #wron:178 #xtin:45 #ycle:32 #ying:-36 #ymor:-36 #your:147 #youv:96
%again_later:-110 %again_later%call_off:-69 %again_later%car:-29 %again_later%elsewhere:46 %again_later%family:26
%again_later%message:-26 %again_later%refuse:-93 %again_later%shift_it:53 %again_later%staff:37
%again_later%start_again:-58 %agree:-125 %agree%call_off:-59 %agree%family:31 %agree%refuse:-78 %agree%who:-26
%agree%wrong_one:-51 %away:-30 %away%family:48 %away%shift_it:25 %away%wrong_one:-66 %bad:72 %bad%call_off:81
%bad%refuse:70 %bad%wrong_one:58 %bring%call_off:28 %bring%car_part:-42 %bring%family:26 %bring%leave_me:-52
%bring%message:25 %bring%on_way:-33 %bring%question:44 %bring%refuse:82 %bring%staff:-37 %bring%wrong_one:-42
%busy:-55 %busy%wrong_one:-43 %call_off:-167 %call_off%car:-39 %call_off%do_it:94 %call_off%fails:-41
%call_off%family:56 %call_off%odometer:67 %call_off%on_way:66 %call_off%phone:44 %call_off%place:34
%call_off%question:148 %call_off%refuse:109 %call_off%shift_it:-41 %call_off%start_again:-67 %call_off%thanks:-56
%call_off%who:172 %call_off%wrong_one:-210 %car:193 %car%car_part:-32 %car%do_it:83 %car%fails:-57 %car%gone_car:63
%car%phone:94 %car%question:86 %car%refuse:276 %car%who:34 %car%wrong_one:-43 %car_part:-112 %car_part%do_it:-49
%car_part%wrong_one:-101 %do_it:-44 %do_it%family:36 %do_it%gone_car:93 %do_it%question:33 %do_it%refuse:166
%do_it%who:39 %doubt:119 %doubt%message:32 %doubt%question:89 %doubt%staff:140 %doubt%who:58 %doubt%wrong_one:104
%elsewhere:47 %elsewhere%family:-37 %elsewhere%question:-29 %elsewhere%refuse:167 %elsewhere%shift_it:41
%elsewhere%wrong_one:121 %fails:-91 %fails%refuse:-57 %family:285 %family%gone_car:64 %family%phone:98
%family%refuse:97 %family%shift_it:25 %family%who:28 %family%wrong_one:25 %gone_car%phone:117 %gone_car%question:-46
%gone_car%staff:32 %gone_car%who:-83 %gone_car%wrong_one:-113 %how_long:-70 %how_long%refuse:-29
%how_long%wrong_one:-26 %leak:-27 %leave_me:-168 %leave_me%message:44 %leave_me%odometer:-33 %leave_me%refuse:42
%leave_me%wrong_one:-116 %machine:-108 %machine%refuse:-25 %machine%staff:-72 %machine%wrong_one:-80 %meaning:-35
%meaning%refuse:-54 %message%odometer:40 %message%phone:-68 %message%staff:77 %money:-149 %money%refuse:-29
%money%staff:-28 %money%who:30 %money%wrong_one:-94 %noise:-56 %odometer:-25 %odometer%phone:27 %odometer%refuse:87
%odometer%wrong_one:-39 %on_way%refuse:60 %opening:-28 %pay_day:-41 %pay_day%season:-40 %phone:48 %phone%question:36
%phone%refuse:52 %phone%staff:-131 %phone%start_again:-48 %phone%who:-34 %place:-52 %place%question:-39
%place%wrong_one:-48 %question:-207 %question%refuse:193 %question%staff:99 %question%who:-52
%question%wrong_one:-245 %refuse%start_again:-114 %refuse%thanks:-42 %refuse%who:352 %refuse%wrong_one:56 %season:-47
%shift_it:37 %shift_it%staff:83 %shift_it%who:33 %shift_it%wrong_one:65 %smoke_smell:-32 %staff:33
%staff%start_again:-31 %staff%who:43 %start_again:-134 %start_again%wrong_one:-103 %thanks:-50 %who:188
%who%wrong_one:-54 %wrong_one:389 @?:-85 @after_visit:-129 @car:-38 @confirm:-86 @confirm_stop:-92 @day:-62
@offers:-115 @reading:-42 @time:-63 @times:-163 @walk_in:-59 ^_aqui:197 ^_can:-30 ^_car:-42 ^_creo:51 ^_cual:31
^_de:-106 ^_do:-120 ^_dont:-158 ^_ese:108 ^_esta:37 ^_este:128 ^_going:-25 ^_got:-114 ^_had:-40 ^_he:65 ^_how:-63
^_i:119 ^_id:-29 ^_im:83 ^_is:-75 ^_me:40 ^_mi:-31 ^_my:-34 ^_nadie:-25 ^_never:75 ^_no:-85 ^_nobody:117 ^_not:47
^_numero:40 ^_nunca:50 ^_que:-56 ^_quien:-42 ^_quienes:-32 ^_quiero:-26 ^_quiten:-26 ^_sorry:36 ^_soy:79 ^_stop:-78
^_te:29 ^_the:-35 ^_there:96 ^_this:324 ^_what:-62 ^_who:-59 ^_wrong:177 ^_ya:-202 ^_yo:179 ^_your:-26 ^_youve:75
a:90 a__car:-32 a__of:47 a__person:-29 a__taller:42 a_car:111 a_customer:57 a_ese:36 a_este:-28 a_guy:-31 a_new:-26
a_person:-47 a_real:-35 about:27 about_$:41 alguien:-41 all:-35 already:-33 am:48 am_$:48 and__dont:39 and__is:27
and__never:-31 and_dont:34 answer:-41 any:81 anymore:-36 anymore_$:-37 aqui:275 aqui_$:37 aqui__es:64 aqui__hay:70
aqui__vive:85 aqui_no:215 are:53 are_$:84 are_you:-34 asi:-29 ask:-29 asked_for:-28 at__number:33 at_this:25 back:-35
been:84 been__your:68 been_to:82 before:38 before_me:25 belongs:53 belongs_to:53 bill_was:-46 blocking:-47 bring:25
bus:48 busca:49 buscan:49 business:29 but:52 by:81 by__name:95 by_that:95 call:-61 call_$:-30 call_me:-29 cambio:28
cambio_de:28 can:-67 car:56 car_$:30 car__you:33 car_to:36 carro__no:-56 carro__ustedes:33 carro_con:33
carro_tengo:68 carro_ya:-61 cars:-38 cars_$:-25 cel:132 changed:29 cita:76 cliente:118 coming:-26 como:-28 con:80
con_el:-30 con_ese:29 con_ustedes:47 conozco:175 conozco_$:93 creo:40 creo__se:29 creo_que:57 cual:30 customer:109
customer_$:54 daughter:29 de:118 de__es:-48 de__taller:50 de_el:28 de_ese:30 de_numero:35 de_persona:33 de_quien:-47
de_una:27 dejen:27 dejen_de:27 did:-42 did__get:-37 did_you:-40 do:-193 do__have:-30 do__know:-44 do_i:-54 do_you:-65
doesnt:75 done:-43 dont:-106 dont__a:123 dont__any:79 dont__it:-66 dont__me:-40 dont__that:-124 dont__the:-52
dont__this:-59 dont__what:45 dont__you:66 dont__your:-26 dont_drive:42 dont_even:35 dont_have:-91 dont_know:282
dont_need:-28 dont_text:-31 dont_think:-51 dont_want:-55 drive:71 drive_$:70 dude:49 dueno:-35 dueno_$:-37 el:58
el__de:69 el__no:52 el_carro:-94 el_dueno:-32 el_numero:104 el_ya:69 ella:47 ella_$:25 en:-29 equivocado:120
equivocado_$:46 equivocado_de:31 era:37 es:207 es_$:-44 es__el:38 es__mi:77 es__numero:29 es_de:146 es_el:69
es_este:-92 es_mi:79 es_mio:-71 es_para:54 es_usted:35 esa:54 esa_persona:43 ese:164 ese__no:78 ese_carro:-110
ese_senor:85 ese_taller:27 eso:-38 esta:89 este:203 este_$:-48 este__es:111 este__no:25 este__quien:-51 este__ya:39
este_cel:104 este_no:38 este_telefono:117 even:38 ever:-55 ever_$:-44 ex:25 favor:-29 for_$:29 for_that:-32
forget:-31 from:-41 gave:-25 get:-76 get__number:-51 gets:25 going:-42 got:-221 got_$:-25 got__guy:-29 got__number:36
got__wrong:52 got_a:-81 got_it:-34 got_my:-25 got_the:45 got_this:50 gracias:-34 guardado:-54 guy:64 guys:-62
guys_$:-35 hablan:71 hablan_$:59 hablar:-39 hablar_con:-38 hablo:-31 hablo_$:-25 had:-67 had__done:-25 have:89
have__wrong:90 have_a:65 have_never:91 have_someone:-26 have_that:-33 hay:25 he:327 he__a:36 he_ido:38 he_llevado:36
heard:59 heard__you:40 heard_of:59 her:150 here:173 here_$:65 hes:48 him:127 him_$:49 his:211 hospital:35 how:-73
how__you:-47 how_did:-37 i:62 i__a:-37 i__drive:37 i__in:70 i__know:154 i__my:-34 i__never:76 i__own:31 i__the:53
i__this:44 i__to:-39 i__want:-38 i__you:-27 i_am:52 i_dont:52 i_got:-42 i_have:55 i_just:45 i_know:-47 i_live:68
i_never:-86 i_only:31 i_take:51 i_think:31 i_want:-40 id:-35 id_rather:-34 idea:61 idea_who:71 ido:38 ido_a:37 if:-31
ill:-50 im:142 im__the:78 im_not:196 in:41 in__and:30 in__car:-37 in__life:28 in__state:37 in_another:41
interested:-41 interested_$:-26 is:64 is__bill:38 is__with:-26 is_a:74 is_his:97 is_it:-33 is_my:31 is_no:100
is_not:151 is_the:43 is_this:-208 is_wrong:-35 isnt:257 it:-190 it_$:-99 it__his:48 it__this:-29 it_is:67 it_on:-31
just__this:41 just_got:32 know:211 know_$:-36 know__you:28 know_what:48 know_who:25 know_you:77 la__que:46
la_persona:68 le:-81 life:37 life_$:26 like:-25 linda:91 live:53 live_in:65 llevado:36 lo:-162 longer:-52 looking:69
looking_for:70 los:65 los_conozco:93 mal:197 mal_$:96 mal_el:79 mama:30 manejo:69 mas:-36 me_$:147 me__con:66 mean:26
meant:90 mejor:-29 mensaje:51 mi_$:59 mi_numero:-69 mind:-38 mine:29 mine_$:26 minivan:29 mio:-80 mom:28 month:-37
month_$:-30 more:-64 more_$:-26 moved:30 must:92 must_be:54 must_have:37 my:-56 my__is:42 my__was:-46 my_bill:-47
my_car:37 my_life:28 my_name:29 my_number:-69 my_own:-34 my_wife:-25 nada_$:-25 name:114 necesario:-26 need:-85
never:75 never__a:46 never__of:59 never__to:62 never_been:78 never_heard:59 new:-76 ni:185 ni__conozco:43
ni__tengo:68 ni_carro:68 ni_los:38 nice:25 ningun:104 ninguna:47 no:228 no_$:-211 no__at:31 no__carro:92
no__cliente:84 no__conozco:96 no__de:132 no__el:35 no__esa:38 no__este:113 no__guardado:-50 no__here:113 no__i:-42
no__is:-52 no__la:38 no__lo:-32 no__mi:55 no__mio:-99 no__nadie:30 no__ni:-43 no__ningun:97 no__ninguna:45 no__no:-26
no__para:52 no__quien:67 no__yo:83 no_and:-57 no_car:50 no_conozco:36 no_es:263 no_esta:74 no_hay:41 no_i:-31
no_idea:52 no_longer:-50 no_los:57 no_me:-37 no_more:-54 no_not:-37 no_one:98 no_se:126 no_soy:379 no_tengo:66
no_tiene:29 no_vive:94 nobody:119 nobody_here:60 nombre_$:31 not:314 not_$:-38 not__car:100 not__customer:81
not__month:-32 not__not:-29 not__you:47 not_ever:-44 not_her:68 not_him:88 not_interested:-37 not_me:193 not_my:187
not_now:-72 not_the:114 not_this:-51 not_worth:-28 not_yet:-61 now:-111 now_$:-59 nueva:31 nuevo:25 nuevo_$:28
number:70 number_$:-71 number__this:-50 number_is:-43 numero:60 numero_$:-28 numero__es:-39 numero__no:33
numero_equivocado:39 numero_es:-26 nunca_$:-42 nunca__ido:36 nunca_he:47 nunca_me:-39 o:-67 ocupo:-30 of:58 of_you:43
off:-27 office:43 office_$:35 oil:-33 on:-128 on_this:-29 one:39 otra_$:41 otra_persona:25 otra_vez:-33 otro:35
own:-43 own__car:54 own_a:66 own_that:-80 owner:70 para_mi:49 parte:-35 people:-40 pero:28 person:-61 person_$:-88
persona:105 persona_$:52 persona_que:49 phone:110 phone__to:36 phone_anymore:45 phone_belongs:28 phone_me:-59 por:-78
por_telefono:-27 puede:-33 put:-44 put_the:-37 que:79 que__es:-52 que_busca:44 que_buscan:50 que_numero:-44 que_se:26
que_taller:27 quien:-61 quien__usted:42 quien_es:-59 quienes:45 quienes_son:34 quiero:-47 quit:28 quiten:-27
quiten__numero:-28 rather:-40 reached:83 real:-41 real_person:-36 ring:-26 saved:-49 se:148 se__de:30 se__es:43
se__que:60 se_equivocado:72 se_quienes:83 see:-39 senor:76 senora:26 she:30 shop:80 shop_$:75 so:-77 so_$:-31
so_no:-38 sold:-31 some:41 someone_$:-38 someone__me:-26 someone_else:65 somewhere:-25 sorry__is:36 soy:537
soy__persona:105 soy_cliente:89 soy_esa:57 soy_la:97 soy_yo:82 state:36 stop:-49 su:67 su_taller:38 suyo:56
take_the:50 talk:-57 talk__a:-34 talk_to:-54 talking:43 taller:61 taller_$:40 te:52 telefono:101 telefono_$:48
tengo:125 tengo_$:47 tengo__este:-36 tengo_carro:106 tengo_guardado:-50 text_me:-27 texting:45 texting_me:27
thanks:-26 thanks_$:-25 that__anymore:-60 that_car:-26 that_name:95 the__anymore:-48 the__guy:40 the__no:30
the__number:45 the__of:26 the__oil:-35 the__person:31 the_bus:48 the_car:-46 the_owner:71 the_phone:-67 the_truck:-32
the_van:-40 the_wife:25 the_wrong:104 there:53 there_$:-31 there__no:103 there_is:93 these:-34 think:75 think_so:-31
think_this:45 think_you:71 this:132 this_$:-138 this__a:72 this__belongs:51 this__his:73 this__my:26 this__not:82
this__the:41 this_a:-30 this_is:221 this_isnt:204 this_month:-32 this_phone:96 this_was:45 this_week:-34 tiene:30
time:-87 time_$:-45 to:-34 to__shop:59 to_text:43 to_you:27 to_your:72 took:-26 truck:-40 trust:-51 una_persona:-37
up:-39 usa:78 usted:76 usted_$:41 ustedes:25 ustedes_$:40 van:-48 vehicle:62 vez:-26 vive:94 vivo:34 voy:-28 want:-54
want_to:-32 wasnt:25 we:-39 we_got:-27 week_$:-31 what:-39 what__wrong:-31 what__your:43 what_is:-54 where:-35
who__are:87 who__it:-44 who__this:-70 who__you:-51 who_is:-107 who_this:-28 who_you:133 whoever:46 whoever_you:31
why:-43 why_not:-32 wife:41 will:-68 with_you:34 work:-37 worth:-44 worth_it:-28 wrong:178 wrong_guy:51
wrong_number:160 wrong_with:-27 y:-57 ya:-126 ya__es:-71 ya__tengo:-44 ya__tiene:33 ya_no:-101 yet:-68 yet_$:-54
yo:317 yo_$:29 yo__de:34 yo__manejo:69 yo__soy:87 yo__tengo:50 yo_le:-39 yo_lo:-38 yo_ni:154 yo_no:167 yo_soy:35
you:141 you_$:106 you__have:41 you__i:32 you__my:-27 you__the:100 you__to:41 you__used:-25 you_are:78 you_get:-41
you_guys:-61 you_have:87 you_must:71 you_people:-28 you_put:-38 you_think:52 you_want:50 your:81 your__for:41
your_customer:34 your_garage:26 your_shop:36 youre:32 yours:49 yours_$:40 youve:96 youve__a:69 youve_got:28
"""
