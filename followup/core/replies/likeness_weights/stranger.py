"""What speaks for and against `stranger`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "stranger"
BIAS = -208
WEIGHTS = """\
#abla:45 #able:-51 #ablo:-27 #abou:27 #acce:-37 #ache:75 #acia:-27 #acto:22 #ahor:-25 #aken:30 #algu:-28 #alki:39
#alle:43 #alre:-22 #amar:-31 #anad:56 #anda:-29 #ando:66 #anej:76 #anic:-36 #answ:-39 #anym:-37 #aqui:227 #arca:117
#arda:-53 #aren:47 #arge:-24 #arme:31 #arte:-37 #asnt:34 #atio:-25 #augh:23 #auto:-26 #aved:-44 #avis:-23 #back:-36
#been:65 #befo:28 #belo:52 #blan:76 #blar:-34 #bloc:-43 #boar:22 #body:114 #book:25 #bout:27 #busc:88 #busi:27
#cado:91 #call:-81 #came:-39 #cana:35 #cand:81 #caro:45 #cars:-25 #cast:35 #ccep:-36 #cept:-37 #cesa:-27 #char:-27
#ched:70 #cias:-27 #cita:69 #ckin:-44 #clie:112 #comi:-30 #conf:72 #cono:127 #cont:44 #creo:34 #cupo:-25 #cust:97
#cycl:27 #dado:-45 #daug:24 #dent:27 #digi:30 #does:53 #dont:-70 #down:-29 #driv:62 #dude:45 #duen:-26 #each:62
#eady:-38 #eant:84 #eard:48 #eces:-40 #echa:-30 #ecio:22 #econ:-30 #eded:-23 #eede:-23 #efie:-23 #efon:81 #efor:28
#ehic:54 #ejen:22 #ejor:-27 #elef:81 #ella:49 #elon:53 #ende:-32 #enes:40 #engo:100 #enme:-22 #enor:100 #ensa:39
#ente:96 #eopl:-36 #epta:-30 #equi:133 #eres:-62 #erso:30 #esar:-28 #esnt:65 #espo:-28 #esta:51 #este:108 #evad:35
#even:28 #ewhe:-37 #exti:34 #fall:48 #ffic:37 #fice:38 #fier:-23 #fono:83 #forg:-29 #from:-30 #fund:87 #gave:-27
#ghte:24 #give:-24 #goin:-39 #grac:-28 #guar:-51 #guie:-28 #guna:31 #guys:-56 #hace:-24 #hago:-23 #harg:-26 #have:86
#hear:41 #here:137 #hers:35 #hese:-32 #hicl:54 #hing:-24 #hink:74 #hoev:42 #hone:73 #hora:-23 #hosp:30 #hter:24
#icle:56 #idea:57 #iden:-30 #iene:76 #ient:113 #iero:-60 #ight:-35 #igit:30 #inda:75 #ines:24 #ingu:126 #iniv:25
#inte:-49 #isnt:222 #ista:25 #ital:29 #iten:-22 #ivan:25 #ivoc:137 #king:70 #know:175 #lama:-39 #land:38 #leci:28
#lefo:81 #lgui:-27 #lien:105 #life:29 #like:-22 #lind:80 #line:42 #list:-23 #live:64 #lkin:39 #llam:-54 #llec:28
#lled:-27 #lleg:22 #ller:49 #lock:-46 #lome:22 #look:49 #lrea:-22 #lvid:-31 #mama:27 #mane:74 #marc:124 #mber:93
#mean:102 #mejo:-27 #mens:25 #mero:48 #mewh:-23 #mind:-38 #ming:-32 #mini:25 #mist:35 #mond:-32 #mont:-35 #more:-95
#move:31 #mpre:-24 #must:81 #nada:24 #name:218 #nden:49 #nece:-46 #need:-109 #nejo:66 #ness:27 #neve:42 #nfun:88
#nged:29 #nger:-37 #ngun:126 #ning:83 #niva:25 #nobo:113 #nora:23 #nozc:137 #nsaj:25 #nswe:-39 #nter:-53 #ntra:39
#nuev:58 #numb:81 #nume:38 #nymo:-37 #oard:22 #obod:113 #ocad:102 #ocki:-43 #ocup:-32 #oday:-26 #oesn:65 #oeve:42
#offi:38 #oing:-52 #okin:70 #olvi:-33 #omer:107 #omin:-31 #onda:-35 #ones:-31 #onfu:85 #onge:-42 #ongs:46 #onoz:137
#onth:-40 #ontr:52 #ooki:70 #ople:-36 #orge:-22 #orth:-43 #ospi:30 #otro:31 #oure:26 #ours:31 #ouve:85 #oved:26
#over:-22 #owne:102 #ozco:137 #part:-35 #peop:-36 #pero:23 #pers:27 #phon:68 #pita:30 #pref:-31 #pued:-43 #quie:-58
#quiv:134 #raci:-31 #rata:44 #rath:-35 #rcan:68 #rcar:51 #rdad:-58 #reac:71 #read:-48 #real:-42 #reco:-31 #refi:-23
#regl:-24 #ress:-23 #rest:-41 #rged:-23 #rget:-22 #rive:63 #rmen:26 #rnin:-28 #rong:152 #rson:30 #ruck:-35 #rust:-47
#saca:-37 #saje:30 #save:-46 #scan:63 #seno:95 #shop:67 #sine:27 #sold:-24 #sona:79 #spit:30 #spos:-22 #stak:35
#stat:28 #sted:37 #stom:97 #stop:-46 #stuf:-23 #suyo:53 #swer:-39 #tado:60 #take:57 #tall:41 #tate:30 #tele:71
#teng:108 #tere:-48 #teve:44 #text:28 #ther:44 #thes:-32 #thin:50 #this:109 #tien:33 #time:-70 #ting:30 #tion:-40
#toda:-30 #tome:97 #took:-28 #trat:43 #truc:-35 #trus:-47 #tuff:-23 #uard:-51 #uedo:-22 #ueno:-36 #ueva:30 #uevo:25
#ught:35 #uien:-47 #uier:-38 #uite:-22 #uivo:134 #umbe:84 #umer:38 #unde:60 #undi:30 #usca:98 #usin:26 #uste:75
#usto:96 #vado:23 #vehi:54 #vent:23 #vide:-31 #vive:77 #vivo:30 #voca:137 #want:-62 #wasn:23 #week:-28 #when:-24
#wher:-74 #whoe:42 #wife:36 #will:-63 #with:23 #wned:34 #wner:68 #work:-39 #wort:-42 #wron:141 #xtin:34 #ycle:27
#ying:-34 #ymor:-37 #your:127 #youv:85 %again_later:-100 %again_later%call_off:-58 %again_later%car:-27
%again_later%elsewhere:43 %again_later%message:-25 %again_later%refuse:-76 %again_later%shift_it:49
%again_later%staff:32 %again_later%start_again:-53 %again_later%who:-22 %agree:-99 %agree%call_off:-43
%agree%family:26 %agree%refuse:-59 %agree%who:-23 %agree%wrong_one:-34 %away:-35 %away%family:41 %away%on_way:-22
%away%wrong_one:-54 %bad:59 %bad%call_off:67 %bad%refuse:57 %bad%wrong_one:54 %bring%call_off:38 %bring%car_part:-34
%bring%family:23 %bring%leave_me:-47 %bring%on_way:-23 %bring%question:41 %bring%refuse:86 %bring%staff:-31
%bring%wrong_one:-22 %busy:-50 %busy%wrong_one:-39 %call_off:-113 %call_off%car:-53 %call_off%do_it:51
%call_off%fails:-32 %call_off%family:49 %call_off%meaning:-23 %call_off%message:31 %call_off%odometer:53
%call_off%on_way:54 %call_off%phone:36 %call_off%place:28 %call_off%question:131 %call_off%refuse:93
%call_off%shift_it:-36 %call_off%start_again:-61 %call_off%thanks:-41 %call_off%who:146 %call_off%wrong_one:-171
%car:149 %car%car_part:-28 %car%do_it:72 %car%fails:-46 %car%gone_car:62 %car%noise:-23 %car%phone:80
%car%question:76 %car%refuse:212 %car%who:27 %car%wrong_one:-48 %car_part:-78 %car_part%do_it:-38
%car_part%wrong_one:-68 %do_it:-58 %do_it%family:29 %do_it%gone_car:94 %do_it%question:35 %do_it%refuse:118
%do_it%who:36 %doubt:93 %doubt%message:28 %doubt%question:78 %doubt%staff:130 %doubt%who:50 %doubt%wrong_one:85
%elsewhere%family:-39 %elsewhere%question:-30 %elsewhere%refuse:130 %elsewhere%shift_it:37 %elsewhere%wrong_one:90
%fails:-74 %fails%refuse:-45 %family:213 %family%gone_car:54 %family%phone:88 %family%refuse:83 %family%who:23
%family%wrong_one:27 %gone_car:25 %gone_car%phone:105 %gone_car%question:-47 %gone_car%refuse:-22 %gone_car%staff:29
%gone_car%who:-82 %gone_car%wrong_one:-77 %how_long:-56 %how_long%refuse:-22 %leak:-23 %leave_me:-142
%leave_me%message:34 %leave_me%odometer:-24 %leave_me%refuse:48 %leave_me%wrong_one:-99 %machine:-97
%machine%staff:-65 %machine%wrong_one:-71 %meaning:-35 %meaning%refuse:-47 %message:36 %message%odometer:38
%message%phone:-67 %message%refuse:27 %message%staff:71 %money:-129 %money%refuse:-26 %money%staff:-23 %money%who:27
%money%wrong_one:-78 %noise:-49 %odometer:-23 %odometer%phone:24 %odometer%refuse:72 %odometer%wrong_one:-24
%on_way%refuse:52 %on_way%wrong_one:30 %opening:-26 %pay_day:-42 %pay_day%refuse:-27 %pay_day%season:-41 %phone:23
%phone%question:33 %phone%refuse:29 %phone%staff:-98 %phone%start_again:-42 %phone%who:-35 %place:-49
%place%question:-35 %place%wrong_one:-41 %question:-163 %question%refuse:158 %question%staff:90 %question%who:-57
%question%wrong_one:-192 %refuse%start_again:-95 %refuse%thanks:-27 %refuse%who:299 %refuse%wrong_one:59 %season:-40
%shift_it:28 %shift_it%staff:73 %shift_it%who:29 %shift_it%wrong_one:57 %smoke_smell:-30 %staff:38
%staff%start_again:-23 %staff%who:32 %staff%wrong_one:26 %start_again:-112 %start_again%who:-24
%start_again%wrong_one:-86 %thanks:-35 %who:167 %who%wrong_one:-53 %wrong_one:390 @?:-98 @after_visit:-109 @car:-38
@confirm:-55 @confirm_stop:-59 @day:-51 @odometer:-23 @offers:-95 @reading:-32 @time:-56 @times:-145 @walk_in:-42
^_aqui:169 ^_can:-23 ^_car:-33 ^_creo:45 ^_cual:26 ^_de:-99 ^_do:-106 ^_dont:-127 ^_ese:92 ^_esta:25 ^_este:121
^_going:-23 ^_got:-75 ^_had:-26 ^_he:58 ^_how:-44 ^_i:96 ^_id:-23 ^_im:70 ^_is:-70 ^_me:41 ^_mi:-29 ^_my:-36
^_nadie:-22 ^_never:45 ^_no:-59 ^_nobody:111 ^_numero:33 ^_nunca:39 ^_que:-55 ^_quien:-33 ^_quienes:-30 ^_sorry:34
^_soy:69 ^_stop:-71 ^_te:25 ^_the:-27 ^_there:81 ^_this:273 ^_what:-36 ^_who:-51 ^_wrong:158 ^_ya:-172 ^_yo:125
^_your:-30 ^_youve:68 a:62 a__call:-22 a__car:-31 a__of:43 a__taller:36 a_car:95 a_customer:54 a_ese:34 a_este:-25
a_guy:-30 a_new:-25 a_person:-45 a_phone:-23 a_real:-29 about:27 about_$:36 alguien:-27 all:-32 already:-22 am:40
am_$:43 and__dont:36 and__is:22 and__never:-28 and_dont:32 answer:-35 any:88 anymore:-37 anymore_$:-40 appointment:22
aqui:239 aqui_$:40 aqui__es:53 aqui__vive:69 aqui_no:177 are:54 are_$:78 are_you:-28 asi:-26 ask:-24 back:-34 been:65
been__your:48 been_to:61 before:28 belongs:46 belongs_to:46 bill_was:-41 blocking:-42 bus:47 busca:42 buscan:44
business:27 but:45 by:74 by__name:87 by_that:87 call:-51 call_$:-28 call_me:-23 called:-22 can:-53 car:34 car_$:22
car__you:24 car_to:29 carro__no:-53 carro__ustedes:23 carro_con:23 carro_tengo:60 carro_ya:-57 cars:-25 cel:113
changed:26 charged:-22 cita:70 cliente:106 coming:-22 con:70 con_el:-26 con_ustedes:36 conozco:146 conozco_$:76
creo:34 creo__se:23 creo_que:51 cual:25 customer:97 customer_$:48 daughter:25 de:90 de__es:-51 de__taller:40 de_el:27
de_ese:27 de_numero:25 de_persona:31 de_quien:-46 de_una:24 dejen:25 dejen_de:25 did:-28 did__get:-26 did_you:-28
do:-160 do__have:-23 do__know:-44 do_i:-52 do_you:-53 doesnt:65 donde_es:-23 done:-28 dont:-70 dont__a:115
dont__any:77 dont__it:-50 dont__me:-30 dont__that:-119 dont__the:-50 dont__this:-53 dont__what:41 dont__you:58
dont__your:-23 dont_drive:39 dont_have:-85 dont_know:261 dont_text:-23 dont_think:-47 dont_want:-44 down:-28
down_$:-27 drive:61 drive_$:62 dude:45 dueno:-30 dueno_$:-32 el:66 el_$:22 el__de:58 el__no:47 el_carro:-75
el_dueno:-23 el_numero:93 el_ya:61 ella:43 ella_$:23 en:-26 equivocado:91 equivocado_$:34 equivocado_de:24 era:32
es:153 es_$:-44 es__el:35 es__mi:69 es_de:128 es_el:58 es_este:-95 es_mi:68 es_mio:-72 es_para:52 es_usted:32 esa:45
esa_persona:34 ese:135 ese__no:69 ese_carro:-98 ese_senor:75 eso:-28 esta:73 este:167 este_$:-48 este__es:101
este__no:25 este__quien:-48 este__ya:31 este_cel:89 este_no:35 este_telefono:101 even:30 ever:-49 ever_$:-44 for_$:26
for_that:-33 forget:-22 from:-30 gave:-27 gave_you:-23 get:-63 get__number:-40 going:-39 got:-156 got_$:-26
got__guy:-28 got__wrong:40 got_a:-74 got_the:35 got_this:41 gracias:-27 guardado:-51 guy:45 guys:-56 guys_$:-30
hablan:65 hablan_$:53 hablar:-30 hablar_con:-28 hablo:-34 hablo_$:-28 had:-33 hago:-23 have:62 have__wrong:72
have_a:66 have_never:80 have_someone:-23 have_that:-35 havent:23 he:280 he__a:30 he_ido:31 he_llevado:29 heard:48
heard__you:35 heard_of:48 her:127 here:161 here_$:65 hes:42 him:104 him_$:38 his:180 hospital:30 how:-52 how__you:-32
how_did:-26 i:52 i__a:-40 i__drive:34 i__in:67 i__know:140 i__my:-26 i__never:65 i__own:23 i__see:-22 i__the:51
i__this:41 i__to:-34 i__want:-35 i__you:-32 i_am:43 i_dont:47 i_got:-40 i_have:47 i_just:36 i_know:-46 i_live:65
i_never:-75 i_only:27 i_take:49 i_think:24 i_want:-38 id:-28 id_rather:-29 idea:57 ido:31 ido_a:30 if:-23 ill:-46
im:124 im__the:75 im_down:-26 im_not:182 in:51 in__and:29 in__car:-33 in__state:34 in_another:38 in_my:-24
interested:-38 interested_$:-24 is:56 is_$:-25 is__a:-23 is__bill:35 is_a:59 is_his:85 is_it:-30 is_my:27 is_no:88
is_not:135 is_the:39 is_this:-162 is_wrong:-28 isnt:222 it:-127 it_$:-65 it__his:41 it__this:-27 it_is:56 it_on:-27
just__this:33 just_got:26 know:186 know_$:-38 know__you:26 know_what:43 know_who:23 know_you:65 la__que:41
la_persona:61 le:-70 le_hablo:-23 let:-23 life:29 like:-22 live:51 live_in:62 llevado:29 lo:-148 lo_hago:-22
longer:-44 looking:61 looking_for:62 los:50 los_conozco:77 mal:173 mal_$:82 mal_el:72 mama:27 manejo:66 mas:-31
me_$:120 me__con:63 meant:84 mejor:-27 mensaje:48 mi_$:52 mi_numero:-54 mind:-32 mine:23 mine_$:22 minivan:25 mio:-80
mom:24 monday_$:-22 month:-39 month_$:-33 more:-58 more_$:-24 moved:27 must:76 must_be:48 must_have:34 my:-26
my__is:36 my__was:-41 my_bill:-43 my_car:34 my_name:33 my_number:-56 my_old:22 my_own:-24 my_wife:-24 nada_$:-23
name:112 necesario:-27 need:-63 needed:-23 needed_$:-22 never:48 never__a:38 never__of:48 never__to:43 never_been:57
never_heard:48 never_mind:-24 new:-57 ni:174 ni__conozco:38 ni__tengo:60 ni_carro:60 ni_los:34 ningun:97 ninguna:31
no:214 no_$:-157 no__at:27 no__carro:73 no__cliente:76 no__conozco:80 no__de:118 no__el:33 no__esa:30 no__este:99
no__guardado:-47 no__here:99 no__i:-38 no__is:-48 no__la:36 no__lo:-31 no__mi:44 no__mio:-94 no__nadie:24
no__necesario:-23 no__ni:-39 no__ningun:92 no__ninguna:29 no__no:-23 no__para:49 no__que:-22 no__quien:59 no__yo:69
no_and:-53 no_car:45 no_conozco:28 no_es:222 no_esta:66 no_hay:34 no_i:-27 no_idea:50 no_longer:-42 no_los:45
no_me:-25 no_more:-47 no_not:-40 no_one:86 no_se:114 no_soy:315 no_tengo:49 no_tiene:26 no_vive:77 nobody:113
nobody_here:55 nombre_$:25 not:234 not_$:-31 not__car:95 not__customer:73 not__month:-35 not__this:-22 not__you:43
not_a:22 not_ever:-44 not_her:57 not_him:78 not_interested:-34 not_me:158 not_my:171 not_now:-74 not_the:114
not_this:-51 not_worth:-27 not_yet:-61 now:-113 now_$:-59 nueva:30 nuevo:29 nuevo_$:31 number:69 number_$:-64
number__this:-35 number_is:-29 numero:41 numero_$:-35 numero__es:-32 numero__no:31 numero_equivocado:34 numero_es:-28
nunca_$:-35 nunca__ido:29 nunca_he:36 nunca_me:-38 o:-64 ocupo:-25 of:64 of_that:25 of_you:37 office:38 office_$:30
oil:-26 on:-100 on_this:-28 one:35 otra_$:40 otra_persona:22 otra_vez:-32 otro:31 out_of:-26 own:-36 own__car:42
own_a:51 own_that:-72 owner:71 para_mi:44 parte:-30 people:-36 pero:24 person:-50 person_$:-80 persona:86
persona_$:41 persona_que:45 phone:82 phone__to:31 phone_anymore:36 phone_belongs:25 phone_me:-55 por:-63
por_telefono:-30 prefiero:-23 puede:-26 put:-36 put_the:-33 que:56 que__es:-52 que__son:-22 que_busca:37
que_buscan:44 que_numero:-44 quien:-60 quien__usted:38 quien_es:-55 quienes:40 quienes_son:30 quiero:-35 quit:24
quiten__numero:-22 rather:-35 rather_talk:-22 reached:75 real:-34 real_person:-30 ring:-24 saved:-44 se:118 se__es:39
se__que:54 se_equivocado:56 se_quienes:79 see:-35 senor:66 senora:23 shop:58 shop_$:53 so:-73 so_$:-31 so_no:-36
sold:-23 some:35 someone_$:-34 someone_else:58 somewhere:-23 sorry__is:40 soy:453 soy__persona:87 soy_cliente:81
soy_esa:47 soy_la:86 soy_yo:68 state:34 stop:-44 stuff:-23 su:54 su_taller:31 suyo:53 take:27 take_the:49 talk:-45
talk__a:-26 talk_to:-43 talking:39 taller:42 taller_$:28 te:45 telefono:83 telefono_$:38 tengo:104 tengo_$:42
tengo__este:-34 tengo_carro:85 tengo_guardado:-47 texting:34 texting_me:25 that_car:-29 that_name:87 the__anymore:-45
the__guy:30 the__no:30 the__number:32 the__of:25 the__oil:-31 the__person:25 the_bus:47 the_car:-41 the_owner:73
the_phone:-60 the_truck:-30 the_van:-34 the_wrong:76 there:46 there_$:-27 there__no:88 there_is:79 these:-32 think:65
think_so:-30 think_this:43 think_you:62 this:109 this_$:-101 this__a:61 this__belongs:45 this__his:61 this__my:29
this__not:74 this__the:37 this_a:-31 this_is:190 this_isnt:176 this_month:-35 this_phone:79 this_was:42 this_week:-35
tiene:26 time:-79 time_$:-38 to:-26 to__shop:40 to_text:41 to_your:52 today:-26 today_$:-25 took:-28 truck:-35
trust:-47 una_persona:-35 up:-35 usa:69 usted:68 usted_$:36 ustedes_$:29 van:-39 vehicle:55 vez:-27 vive:77 vivo:30
want:-44 want_to:-25 wasnt:23 we:-27 we__have:-25 week:-27 week_$:-35 what__wrong:-23 what__your:39 what_is:-37
where:-33 who:-24 who__are:83 who__is:-23 who__it:-40 who__this:-56 who__you:-46 who_is:-99 who_this:-29 who_you:125
whoever:42 whoever_you:28 why:-35 why_not:-27 wife:31 will:-62 with:24 with_you:30 work:-35 worth:-42 worth_it:-27
wrong:141 wrong_guy:39 wrong_number:130 y:-56 ya:-106 ya__es:-72 ya__tengo:-39 ya__tiene:29 ya_no:-81 yet:-67
yet_$:-54 yo:236 yo__de:30 yo__manejo:65 yo__soy:60 yo__tengo:42 yo_le:-40 yo_lo:-43 yo_ni:142 yo_no:127 yo_soy:29
you:98 you_$:91 you__have:37 you__i:28 you__the:74 you__to:39 you_are:75 you_get:-28 you_guys:-54 you_have:67
you_know:-25 you_must:58 you_never:-22 you_people:-23 you_put:-35 you_think:47 you_want:43 your:67 your__for:34
your_customer:31 your_garage:24 youre:27 yours:47 yours_$:37 youve:85 youve__a:63 youve_got:26
"""
