"""What speaks for and against `stranger`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "stranger"
BIAS = -170
WEIGHTS = """\
#abla:36 #able:-51 #ablo:-26 #abou:32 #abue:21 #acce:-40 #ache:66 #acia:-39 #acio:-17 #acto:33 #ahor:-39 #ajes:-27
#aken:33 #akes:-16 #algu:-28 #alki:37 #alle:57 #allo:20 #alre:-24 #alta:-14 #amar:-30 #amig:14 #anad:39 #ance:-23
#anda:-29 #andl:31 #ando:70 #anej:62 #anic:-16 #anks:-45 #anse:14 #answ:-41 #anta:-15 #anym:-31 #appe:-18 #aqui:221
#arag:15 #arca:122 #arco:14 #arda:-51 #aren:22 #arge:-22 #aria:15 #aron:-16 #arra:-17 #arre:-21 #arte:-27 #asnt:17
#ason:14 #athe:-14 #atio:-24 #atte:-17 #auto:-31 #aved:-51 #aven:16 #avis:-16 #avor:-31 #back:-37 #been:50 #befo:35
#belo:39 #bill:-22 #blan:66 #blar:-36 #blem:-15 #bloc:-40 #boar:21 #body:102 #book:18 #bout:32 #brin:14 #buel:21
#buen:-17 #busc:89 #busi:20 #cado:89 #call:-80 #came:-47 #canc:-21 #cand:85 #cans:14 #caro:36 #cars:-21 #ccep:-39
#cell:15 #cept:-39 #cesa:-24 #cesi:-20 #char:-24 #ched:61 #cias:-38 #cion:-22 #cita:48 #ckin:-41 #clic:-14 #clie:100
#comi:-22 #como:-30 #conf:49 #cono:112 #cont:40 #cosa:-26 #creo:34 #cros:17 #ctor:17 #cupo:-18 #cust:94 #dado:-50
#days:-15 #deja:-14 #dent:24 #didn:20 #diff:14 #digi:27 #does:55 #dond:-22 #done:-17 #dont:-80 #driv:36 #duen:-23
#each:56 #eady:-36 #eant:84 #eard:37 #ease:-40 #easo:14 #ebod:15 #eces:-47 #echa:-16 #ecio:24 #econ:-33 #eded:-15
#edes:22 #eede:-15 #eeds:-18 #eels:21 #efie:-20 #efon:76 #efor:35 #eglo:-20 #ehic:55 #ejor:-26 #elef:76 #ella:36
#elon:40 #ende:-36 #enes:31 #engo:93 #enid:17 #enme:-26 #enor:94 #ensa:30 #ente:87 #enti:14 #entr:-17 #eone:-23
#eopl:-27 #epta:-29 #equi:115 #erda:-14 #erdo:18 #eres:-52 #eria:14 #erso:35 #ervi:-16 #esar:-25 #esca:14 #esit:-20
#esnt:77 #espo:-16 #esta:41 #este:103 #ever:39 #ewhe:-36 #exti:31 #exto:-16 #fall:47 #favo:-31 #fere:14 #ffic:18
#fice:19 #fier:-21 #fixe:-16 #fono:77 #foot:15 #fore:30 #forg:-23 #frid:-14 #from:-20 #fund:67 #game:-19 #gara:15
#gave:-27 #gets:15 #give:-24 #goin:-30 #good:-15 #grac:-38 #guar:-49 #guie:-28 #guna:30 #guys:-54 #habl:-16 #hace:-14
#hago:-22 #hank:-53 #happ:-19 #harg:-24 #have:82 #hear:32 #heck:15 #heel:17 #here:113 #hers:25 #hese:-29 #hicl:52
#hijo:-16 #hing:-27 #hink:69 #hoev:50 #hone:76 #hora:-35 #icen:17 #icle:53 #iday:-14 #idea:50 #iden:-25 #idnt:20
#iend:-14 #iene:72 #ient:108 #iero:-64 #iest:17 #ieve:16 #iffe:14 #ight:-27 #igit:27 #inda:70 #ines:18 #ingu:110
#iniv:37 #inte:-43 #ints:-17 #ismo:-15 #isnt:191 #ista:31 #iten:-15 #ivan:37 #ivoc:116 #keep:19 #king:65 #know:171
#lama:-37 #land:49 #leas:-40 #lefo:76 #lest:-14 #leva:20 #levo:-16 #lgui:-27 #lice:17 #lien:95 #life:23 #like:-24
#lind:77 #line:41 #lito:19 #live:69 #lkin:37 #llam:-46 #lled:-17 #lleg:24 #ller:57 #lock:-43 #look:43 #lose:-17
#lrea:-24 #lsew:-14 #lvid:-32 #mail:-16 #mama:23 #mand:-25 #mane:61 #marc:132 #mari:25 #mber:85 #mbio:21 #mbre:15
#mean:105 #mebo:15 #mejo:-26 #mens:19 #ment:-19 #meon:-23 #mero:58 #mewh:-22 #migo:23 #mind:-30 #mine:24 #ming:-24
#mini:37 #mism:-15 #mist:37 #mole:-14 #mome:-22 #mond:-23 #mone:-16 #mont:-28 #more:-70 #move:17 #mput:-15 #muri:14
#must:77 #myse:-14 #nada:22 #name:217 #ncel:-21 #nday:-25 #nden:42 #nece:-36 #need:-94 #nejo:56 #ners:-17 #ness:20
#neve:58 #nfun:68 #nged:17 #nger:-32 #ngun:110 #nice:31 #nido:17 #niet:31 #ning:81 #niva:37 #nobo:88 #nomb:17
#nora:20 #nozc:120 #nsaj:19 #nswe:-41 #nter:-48 #ntis:15 #ntit:19 #ntra:44 #nuev:43 #numb:87 #nume:45 #nunc:18
#nymo:-31 #oard:21 #ober:15 #obod:88 #obot:-14 #ocad:93 #ocki:-40 #ocup:-24 #oday:-19 #oesn:77 #oeve:49 #offi:19
#oing:-42 #okin:59 #oles:-15 #olvi:-33 #ombr:17 #omeb:15 #omen:-22 #omeo:-23 #omer:107 #omin:-23 #ompu:-15 #onda:-29
#onde:-23 #ones:-26 #onfi:-15 #onfu:66 #onge:-38 #ongs:41 #onoz:120 #onte:-27 #onth:-33 #ontr:54 #ooki:59 #oone:-17
#ople:-27 #orge:-19 #orqu:17 #orri:-15 #orry:27 #orth:-42 #osse:17 #otro:27 #ould:-22 #oure:41 #ours:22 #ouve:71
#oved:21 #owne:71 #ozco:120 #pany:16 #para:16 #part:-35 #pasa:-17 #pass:-18 #peak:-17 #peop:-27 #perd:16 #pero:14
#pers:31 #phon:70 #plea:-38 #pong:-14 #porq:17 #pref:-21 #pued:-44 #pull:-19 #puse:-18 #quem:-16 #quie:-75 #quiv:115
#raci:-43 #ract:20 #rage:15 #rata:48 #rath:-25 #rcar:49 #rdad:-52 #rday:-22 #rdon:18 #reac:66 #read:-47 #real:-44
#reas:14 #reco:-30 #refi:-20 #regl:-26 #repl:-21 #resp:-15 #rest:-35 #rged:-21 #rget:-19 #rida:-14 #ries:-18
#righ:-18 #ring:-24 #rive:38 #rmen:25 #rnin:-19 #robo:-14 #rong:172 #ross:17 #rran:-16 #rreg:-22 #rrie:-15 #rson:35
#ruck:-31 #rust:-40 #rvic:-16 #saca:-56 #sado:23 #saje:21 #sari:-14 #saro:-18 #save:-53 #scan:56 #sday:-14 #self:-20
#send:-17 #seno:88 #serv:-16 #sewh:-14 #shes:21 #shop:54 #sign:-18 #sine:20 #sist:15 #sito:-19 #sold:-26 #sona:72
#soon:-18 #sorr:27 #spea:-17 #ssag:14 #stak:37 #stan:-15 #star:-15 #stat:22 #sted:51 #stom:94 #stop:-31 #stuf:-16
#swer:-41 #tabl:-29 #tado:58 #take:52 #tall:47 #tate:23 #tede:22 #tele:64 #teng:105 #teni:17 #tere:-41 #test:-26
#teve:38 #text:16 #than:-55 #them:-18 #ther:48 #thes:-29 #thin:42 #this:135 #thol:17 #tien:45 #time:-57 #tina:17
#ting:19 #tion:-30 #tire:-32 #tist:15 #toda:-22 #todo:-16 #tome:94 #took:-17 #tore:-20 #trac:21 #trat:47 #truc:-31
#trus:-40 #tter:-16 #tuff:-16 #uard:-49 #uede:-14 #uedo:-25 #uena:20 #ueno:-33 #ueva:21 #uevo:24 #ught:21 #uien:-49
#uier:-53 #uite:-15 #uivo:115 #umbe:87 #umer:45 #unca:18 #unde:44 #undi:21 #urio:14 #usca:89 #usin:16 #uste:82
#usto:92 #vado:23 #vehi:55 #vent:16 #vide:-32 #vive:73 #voca:116 #want:-75 #week:-20 #what:-31 #whee:17 #when:-20
#wher:-61 #whoe:50 #will:-58 #wire:18 #with:21 #wner:49 #work:-37 #wort:-42 #wron:157 #xtin:31 #xtos:-15 #ying:-24
#ymor:-31 #your:167 #youv:71 #ysel:-14 %again_later:-103 %again_later%agree:-14 %again_later%call_off:-48
%again_later%car:-17 %again_later%do_it:-29 %again_later%elsewhere:24 %again_later%message:-27
%again_later%refuse:-65 %again_later%shift_it:33 %again_later%staff:35 %again_later%start_again:-49
%again_later%who:-19 %agree:-165 %agree%call_off:-67 %agree%car:-15 %agree%meaning:-14 %agree%money:-15
%agree%phone:-37 %agree%refuse:-101 %agree%shift_it:-14 %agree%who:-22 %agree%wrong_one:-46 %away:-50
%away%on_way:-19 %away%place:15 %away%shift_it:16 %away%wrong_one:-40 %bad:51 %bad%bring:27 %bad%call_off:71
%bad%do_it:15 %bad%meaning:-23 %bad%refuse:60 %bad%wrong_one:36 %bring%car_part:-46 %bring%doubt:22
%bring%gone_car:14 %bring%leave_me:-32 %bring%meaning:15 %bring%message:21 %bring%on_way:-19 %bring%question:46
%bring%refuse:84 %bring%staff:-28 %bring%who:19 %bring%wrong_one:-15 %busy:-38 %busy%wrong_one:-35 %call_off:-181
%call_off%car:-18 %call_off%do_it:104 %call_off%elsewhere:34 %call_off%fails:-23 %call_off%family:68
%call_off%meaning:-17 %call_off%odometer:65 %call_off%on_way:40 %call_off%phone:61 %call_off%place:30
%call_off%question:100 %call_off%refuse:73 %call_off%shift_it:-14 %call_off%start_again:-72 %call_off%thanks:-56
%call_off%who:147 %call_off%wrong_one:-139 %car:170 %car%car_part:-22 %car%do_it:88 %car%fails:-35 %car%gone_car:64
%car%message:29 %car%money:-15 %car%noise:-18 %car%odometer:-20 %car%phone:87 %car%question:53 %car%refuse:183
%car%season:15 %car%thanks:15 %car%who:18 %car%wrong_one:-36 %car_part:-122 %car_part%do_it:-46 %car_part%refuse:15
%car_part%thanks:16 %car_part%wrong_one:-72 %do_it%elsewhere:-14 %do_it%family:19 %do_it%gone_car:85
%do_it%leave_me:-16 %do_it%meaning:14 %do_it%message:-20 %do_it%phone:24 %do_it%question:48 %do_it%refuse:157
%do_it%staff:17 %do_it%who:29 %doubt:94 %doubt%message:26 %doubt%question:68 %doubt%refuse:-16 %doubt%staff:115
%doubt%who:24 %doubt%wrong_one:84 %elsewhere:46 %elsewhere%family:-28 %elsewhere%gone_car:14 %elsewhere%money:-17
%elsewhere%odometer:-16 %elsewhere%place:-14 %elsewhere%refuse:136 %elsewhere%shift_it:17 %elsewhere%staff:21
%elsewhere%wrong_one:95 %fails:-60 %fails%family:23 %fails%gone_car:35 %fails%leave_me:17 %fails%phone:21
%fails%refuse:-32 %fails%wrong_one:-17 %family:111 %family%gone_car:40 %family%meaning:17 %family%message:-15
%family%phone:92 %family%refuse:51 %family%who:30 %family%wrong_one:40 %gone_car%odometer:15 %gone_car%phone:102
%gone_car%question:-26 %gone_car%refuse:-23 %gone_car%staff:39 %gone_car%who:-70 %gone_car%wrong_one:-95
%how_long:-56 %how_long%question:-19 %how_long%refuse:-19 %how_long%wrong_one:-14 %leak:-16 %leave_me:-153
%leave_me%message:22 %leave_me%refuse:25 %leave_me%staff:-16 %leave_me%wrong_one:-104 %machine:-82 %machine%phone:-20
%machine%refuse:-22 %machine%staff:-56 %machine%wrong_one:-62 %meaning:-29 %meaning%question:-18 %meaning%refuse:-44
%message:19 %message%odometer:34 %message%phone:-52 %message%place:19 %message%shift_it:-18 %message%staff:67
%message%start_again:-19 %message%who:27 %money:-141 %money%refuse:-18 %money%staff:-20 %money%who:28
%money%wrong_one:-81 %noise:-37 %odometer%phone:34 %odometer%place:-15 %odometer%question:-22 %odometer%refuse:77
%odometer%shift_it:-14 %odometer%wrong_one:-30 %on_way%question:14 %on_way%refuse:57 %on_way%wrong_one:38
%opening:-21 %pay_day:-28 %pay_day%refuse:-15 %pay_day%season:-37 %phone:30 %phone%question:61 %phone%refuse:55
%phone%season:17 %phone%shift_it:18 %phone%staff:-103 %phone%start_again:-40 %place:-42 %place%question:-38
%place%refuse:14 %place%shift_it:23 %place%who:19 %place%wrong_one:-43 %question:-183 %question%refuse:118
%question%shift_it:25 %question%staff:94 %question%who:-48 %question%wrong_one:-216 %refuse:-32 %refuse%season:-22
%refuse%start_again:-104 %refuse%thanks:-50 %refuse%who:276 %refuse%wrong_one:39 %season:-30 %season%wrong_one:21
%shift_it:27 %shift_it%staff:76 %shift_it%who:25 %shift_it%wrong_one:51 %smoke_smell:-26 %staff:43
%staff%start_again:-22 %staff%who:49 %staff%wrong_one:16 %start_again:-121 %start_again%who:-19
%start_again%wrong_one:-78 %thanks:-70 %who:197 %who%wrong_one:-49 %wrong_one:365 @?:-84 @after_visit:-104 @car:-56
@confirm:-116 @confirm_stop:-74 @day:-16 @later:-39 @odometer:-57 @offers:-85 @reading:-39 @time:-38 @times:-162
@walk_in:-17 ^_aqui:177 ^_can:-29 ^_car:-20 ^_could:-15 ^_de:-82 ^_do:-94 ^_dont:-136 ^_el:36 ^_ese:90 ^_esta:15
^_este:98 ^_going:-23 ^_got:-93 ^_had:-30 ^_how:-53 ^_i:92 ^_ill:-19 ^_im:55 ^_is:-54 ^_it:-15 ^_just:-16 ^_lol:-15
^_me:33 ^_mejor:-21 ^_mi:-23 ^_my:-20 ^_never:63 ^_new:18 ^_ni:21 ^_no:-118 ^_nobody:86 ^_not:44 ^_numero:25
^_nunca:42 ^_prefiero:-17 ^_que:-54 ^_quien:-15 ^_quiero:-21 ^_quiten:-15 ^_ring:-14 ^_somebody:18 ^_someone:-16
^_sorry:41 ^_soy:65 ^_stop:-74 ^_te:19 ^_that:34 ^_the:-27 ^_there:76 ^_this:220 ^_those:14 ^_what:-45 ^_who:-59
^_wrong:135 ^_ya:-209 ^_yo:158 ^_your:-33 ^_youre:23 ^_youve:60 a:74 a__and:15 a__call:-14 a__car:-31 a__for:-17
a__in:15 a__no:14 a__of:35 a__old:17 a__person:-18 a__persona:-18 a__taller:28 a__to:27 a_car:67 a_customer:48
a_ese:34 a_este:-28 a_guy:-28 a_new:-18 a_person:-37 a_phone:-18 a_real:-32 a_su:14 a_year:17 about:32 about_$:38
ahora:-31 alguien:-27 alguien_$:-14 all:-19 already:-24 am:46 am_$:45 amigo:14 amigo_$:14 an:-15 and:48 and__a:21
and__dont:33 and__is:23 and__was:15 and_have:28 and_it:14 and_not:-16 answer:-40 any:83 anymore:-31 anymore_$:-20
aqui:229 aqui_$:36 aqui_no:171 are:55 are_$:77 are_you:-31 arreglo:-20 asi:-15 ask:-38 asked_for:-17 at_a:25
at_the:-17 at_this:17 auto:-14 back:-35 bad:-23 be:22 been:50 been__your:48 been_to:51 before:35 belongs:41
belongs_to:41 bill:-21 bill_was:-47 blocking:-40 bring:15 buen:-16 bus:50 busca:47 business:20 but:23 but_im:23 by:72
by__name:70 by_that:70 call:-56 call_$:-20 call_me:-20 called:-16 called__back:-15 called_me:-15 cambio:31
cambio_de:26 can:-51 can_i:-17 car:48 car_$:27 car_to:38 carro__no:-58 carro_con:23 carro_no:-17 carro_ya:-56
cars:-21 cars_$:-19 cel:99 cel_$:18 cell:15 changed:14 charged:-21 check:17 cita:49 cliente:92 como:-30 company:16
complaints:-16 con:65 con__dueno:-24 con_alguien:-15 con_el:-24 con_ese:24 con_una:-14 con_ustedes:42 conozco:132
conozco_$:89 contacto:16 contacto_$:16 cosa:-17 cosa_$:-15 could:-23 creo:34 creo_que:48 customer:91 customer_$:46
de:86 de__de:-14 de__es:-43 de__este:14 de__taller:44 de_donde:-23 de_la:-14 de_los:-18 de_mi:19 de_numero:30
de_persona:32 de_que:27 de_quien:-41 did:-32 did__get:-29 did_you:-30 didnt:20 different:14 do:-149 do__contact:-20
do__have:-21 do__know:-36 do_i:-50 do_not:-15 do_you:-49 does:-22 doesnt:77 donde:-22 donde_es:-18 done:-35 dont:-80
dont__a:99 dont__any:67 dont__it:-47 dont__me:-33 dont__that:-109 dont__the:-38 dont__this:-50 dont__you:51
dont__your:-21 dont_have:-75 dont_know:229 dont_need:-17 dont_see:-17 dont_text:-33 dont_think:-38 dont_want:-35
down_$:-15 down_for:15 drive:38 drive_$:35 dueno:-25 dueno_$:-36 el:81 el_$:17 el__de:57 el__no:52 el__se:-15
el_carro:-74 el_dueno:-20 el_numero:84 el_que:25 el_taller:-17 el_telefono:-27 ella:37 else:16 elsewhere:-14
en_el:-20 en_mi:16 en_paz:14 equivocado:89 equivocado_$:45 equivocado__numero:20 equivocado_de:28 era:30 era_$:27
es:145 es_$:-39 es__el:35 es__mi:68 es__numero:28 es_de:102 es_el:47 es_este:-83 es_la:18 es_lo:-18 es_mi:42
es_mio:-59 es_necesario:-16 es_para:48 es_usted:28 esa:40 ese:138 ese__no:59 ese_carro:-100 ese_taller:17 eso:-17
esta:73 este:158 este_$:-41 este__es:86 este__no:23 este_cel:84 este_no:26 este_telefono:91 esto:-21 ever:-49
ever_$:-46 favor:-31 favor_$:-15 fixed:-16 foot:15 for_$:29 for__i:-16 for_me:-24 for_someone:19 for_that:-25
for_this:-16 forget:-19 friday:-14 from:-20 from__text:14 garage:15 gave:-27 get:-63 get__number:-40 get_my:-19
gets:15 give:-20 give__a:-14 give_me:-14 go:-15 going:-30 good:-14 got:-151 got_$:-19 got__of:-17 got__wrong:44
got_a:-71 got_it:-24 got_rid:-17 got_the:41 got_to:-20 gracias:-38 gracias_$:-25 guy:34 guy__me:19 guys:-54
guys_$:-29 hablan:59 hablar:-31 hablar_con:-27 hablo:-35 hablo_$:-26 hace_falta:-15 had:-25 had__done:-18 had_a:21
had_this:14 hago:-22 hago_$:-20 have:66 have_$:18 have__a:-15 have__wrong:66 have_a:70 have_never:79 have_someone:-24
have_that:-29 have_time:-14 havent:17 hay:38 he:250 he_ido:27 heard:37 heard_of:37 her:75 here:108 here_$:61 hijo:-16
him:57 his:91 how:-61 how__you:-38 how_did:-29 i:79 i__a:-27 i__drive:35 i__getting:17 i__got:17 i__in:60 i__know:125
i__my:-25 i__never:68 i__see:-17 i__the:51 i__this:42 i__to:-37 i__want:-30 i__you:-32 i_am:51 i_dont:55 i_got:-38
i_had:-15 i_have:50 i_just:39 i_keep:17 i_know:-44 i_live:60 i_never:-65 i_take:35 i_think:25 i_want:-35 id:-18
id__talk:-20 id_rather:-24 idea:50 ido:27 ill:-39 ill__you:-15 ill_let:-14 im:91 im__the:67 im_not:188 in:16
in__and:27 in__car:-33 in_another:27 in_my:-17 in_the:-16 interested:-31 interested_$:-17 is:14 is_$:-21 is__with:-20
is_a:56 is_for:18 is_it:-19 is_my:20 is_no:80 is_not:123 is_this:-148 is_wrong:-29 isnt:191 it:-200 it_$:-79
it__this:-26 it_done:-17 it_on:-26 just__this:31 just_got:26 keep:19 kid:15 know:174 know_$:-30 know_what:42
know_who:23 know_you:60 la:29 la__el:21 la__mi:18 la__que:30 la_persona:51 le:-55 let:-18 let__know:-14 let_you:-14
life:23 like:-23 line:24 lista:-14 live:52 live_in:55 llevo:-16 lo:-127 lo_arreglo:-20 lo_hago:-20 lo_tengo:-15
lol:19 lol_$:40 lol_no:-14 longer:-41 longer__the:-19 longer_have:-20 looking:49 los:42 los_conozco:68
los_mensajes:-18 lugar_$:14 mal:161 mal_$:83 mal_el:65 mama:23 manejo:56 mas:-46 mas_$:-17 may:-14 me:19 me_$:137
me__con:53 me__nada:-20 me_a:-18 me_back:-17 me_in:22 mean:21 meant:84 mejor:-26 mensaje:48 mensajes:-27
mensajes_$:-22 mi:23 mi_$:47 mi__a:-17 mi__es:19 mi__ya:16 mi_hijo:-16 mi_numero:-57 mind:-27 mine:29 mine_$:30
minivan:37 mio:-62 mio_$:-15 mismo:-15 mom:20 momento:-21 monday:-17 money:-15 money_$:-14 month:-33 month_$:-29
more:-40 moved:21 murio:14 must:77 must_have:33 muy:-21 my__is:43 my__not:23 my__out:-14 my_car:21 my_kid:17
my_name:48 my_number:-78 my_old:18 my_own:-18 my_work:-15 myself:-14 nada_$:-27 name:114 necesario:-24 necesito:-19
need:-57 need_$:-14 needed:-15 needed_$:-14 needs:-18 never:61 never__a:46 never__me:-15 never__of:37 never__to:46
never_been:54 never_heard:37 new:-63 new_tires:-21 ni:155 ni__conozco:25 ni_los:20 nice:31 ningun:82 ninguna:30
no:172 no_$:-198 no__at:27 no__carro:88 no__cliente:60 no__conozco:74 no__de:108 no__el:15 no__esa:27 no__este:116
no__have:-20 no__here:93 no__i:-37 no__is:-52 no__la:17 no__lo:-33 no__mi:34 no__ni:-42 no__ningun:84 no__ninguna:31
no__no:-17 no__para:43 no__que:-16 no__quien:50 no__tengo:-20 no__yo:55 no__you:-20 no_and:-41 no_car:44
no_complaints:-16 no_conozco:32 no_es:201 no_esta:69 no_gracias:-23 no_hace:-14 no_hay:43 no_he:15 no_i:-24
no_idea:45 no_lo:-36 no_longer:-40 no_los:50 no_me:-38 no_more:-34 no_need:-17 no_no:-15 no_not:-34 no_one:81
no_por:-15 no_quiero:-15 no_se:118 no_soy:281 no_tengo:54 no_thanks:-21 no_tiene:32 nobody:88 nombre:17 not:253
not_$:-24 not__and:19 not__car:64 not__customer:70 not__i:25 not__it:-26 not__me:-21 not__month:-28 not__this:-15
not__you:37 not_contact:-20 not_for:-30 not_interested:-29 not_my:143 not_now:-63 not_the:112 not_this:-46
not_today:-14 not_yet:-46 now:-92 now_$:-54 now__is:14 now_it:14 nueva:22 nuevo:23 nuevo_$:22 number:63 number_$:-63
number_is:-32 numero:48 numero_$:-39 numero_de:28 numero_equivocado:36 numero_es:-26 nunca:18 nunca_he:33 o:-49
o_es:-16 ocupo:-17 ocupo_$:-14 of:35 of_that:19 of_the:-14 of_you:30 off:-16 off_$:-17 office:19 oil:-43 old:16
on:-93 on_$:-19 on_the:-14 on_this:-26 one:48 one__the:15 otra_$:39 otra_persona:15 otra_vez:-25 otro:27 otro_$:22
out:-15 out_of:-20 own:-47 owner:55 para:18 para_mi:35 para_que:-14 parte:-26 parte_de:-17 paz:14 people:-27 pero:15
person:-37 person_$:-65 persona:78 persona_$:48 persona_que:32 phone:83 phone__to:30 phone_belongs:23 phone_me:-33
please:-38 please_$:-21 por:-53 por__no:-14 por_favor:-17 por_telefono:-23 por_un:24 porque:17 prefiero:-20 puede:-17
puedo:-20 pull:-18 puse:-18 put:-30 put_the:-32 que:74 que__es:-43 que__son:-17 que_busca:41 que_no:-21 que_se:17
que_taller:26 quien:-52 quien_es:-50 quienes:31 quienes_son:31 quiero:-39 quiero__con:-17 quit:19 quiten__numero:-15
rather:-25 rather__to:-21 rather_talk:-20 real:-36 real_person:-31 reason:15 rid:-17 rid_of:-17 right:-17 ring:-23
saved:-51 se:124 se__de:24 se__es:41 se__que:51 se_equivocado:51 se_los:-17 see:-31 send:-16 send_me:-14 senor:60
senora:20 shes:21 shop:54 shop_$:49 shop_is:-14 sir:-16 sir_$:-16 so:-55 so_$:-27 so_no:-25 sold:-26 sold__car:-16
sold_the:-14 some:31 somebody:15 someone:-22 someone__me:-23 someone_else:47 someone_phone:-14 somewhere:-22 son_$:17
soonest:-17 sorry:27 sorry_$:-14 sorry__is:43 soy:426 soy__persona:72 soy_cliente:66 soy_el:27 soy_esa:48 soy_la:81
soy_yo:53 speak:-15 state:27 stop:-29 stuff:-16 su:66 su_taller:32 sus:16 take:20 take_the:35 talk:-44 talk__a:-30
talk_to:-43 talking:37 taller:48 taller_$:29 te:44 telefono:77 telefono_$:46 tengo:94 tengo_$:39 tengo_carro:99
tengo_la:-15 text_me:-23 texting:31 texting_me:16 textos:-15 thanks:-42 thanks_$:-24 that__it:18 that_car:-24
that_is:20 that_name:70 the:-21 the__anymore:-34 the__guy:38 the__no:31 the__number:35 the__of:19 the__person:25
the__with:16 the__you:25 the_bus:48 the_new:-15 the_owner:65 the_phone:-47 the_truck:-31 the_van:-33 the_wrong:89
them:-18 there:61 there__no:81 there_is:73 these:-29 think:69 think__is:26 think_you:57 this:135 this_$:-97
this__a:46 this__belongs:43 this__for:24 this__is:15 this__me:-14 this__the:31 this_a:-24 this_is:170 this_isnt:142
this_month:-29 this_phone:93 this_week:-23 tiene:31 tienen__el:23 time:-70 time_$:-34 times:14 tires:-23 to_$:-14
to__in:14 to__person:-21 to__shop:45 to_a:-19 to_me:32 to_text:41 to_you:25 to_your:52 today:-19 today_$:-19 too:-22
took:-17 truck:-31 trust:-40 try:14 un:38 un__de:20 un_cambio:14 una:16 una_persona:-23 up:-21 use:25 usted:60
usted_$:34 ustedes:22 ustedes_$:38 van:-38 vehicle:52 vez:-18 voy:-17 want:-65 want_a:-15 want_to:-27 was:14
was__for:17 was__to:16 way:-19 we:-18 week:-26 week_$:-27 what:-24 what__this:-16 what__wrong:-22 what__your:37
what_is:-45 wheels:23 when:-17 where:-27 who:-21 who__are:72 who__it:-34 who__this:-57 who__you:-51 who_is:-87
who_you:115 whoever:50 whoever_you:30 why:-31 why_not:-22 will:-57 wires:18 with:22 with_you:25 work:-33 work_$:-20
worth:-42 wrong:157 wrong_$:-26 wrong_guy:50 wrong_number:134 wrong_with:-20 y:-31 ya:-110 ya__es:-69 ya__lo:-15
ya__los:-17 ya__tengo:-43 ya__tiene:32 ya_no:-84 ya_se:-19 yes:-14 yet:-53 yet_$:-42 yo:265 yo_$:29 yo__de:18
yo__el:18 yo__he:18 yo__soy:72 yo__tengo:39 yo_le:-23 yo_ni:131 yo_no:138 yo_soy:36 you:124 you_$:83 you__are:16
you__have:29 you__i:18 you__me:-19 you__my:-19 you__the:66 you__to:42 you_are:63 you_from:14 you_get:-31 you_got:31
you_guys:-52 you_have:43 you_know:-21 you_must:52 you_my:-22 you_never:-18 you_people:-16 you_put:-32 you_think:48
you_want:24 your:100 your__for:20 your__have:-18 your_customer:33 your_shop:25 youre:41 yours:32 youve:71
youve_got:16
"""
