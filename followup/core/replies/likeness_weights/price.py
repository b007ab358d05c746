"""What speaks for and against `price`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "price"
BIAS = -176
WEIGHTS = """\
#abaj:-51 #aber:46 #abin:-23 #abor:131 #abou:-30 #abra:-49 #acei:23 #acer:-29 #acio:51 #affo:-28 #afte:63 #agno:40
#ague:-30 #ahor:49 #akes:37 #alan:23 #alat:25 #alca:36 #aldr:23 #ales:73 #algu:44 #alig:39 #alir:-49 #alki:37
#alla:-26 #allp:135 #ally:84 #alon:25 #alta:-25 #ance:44 #anda:52 #ange:47 #angi:-57 #anit:25 #anta:22 #anto:132
#anty:64 #anyt:40 #anyw:22 #anza:39 #aper:27 #appr:-73 #arat:41 #arch:37 #arda:-120 #arge:41 #argi:99 #argo:30
#aron:-165 #arra:65 #arro:-25 #asta:-33 #asti:-22 #asto:-43 #atan:-46 #atas:25 #atch:45 #ated:-70 #atis:141 #atll:36
#atro:28 #avor:-32 #bajo:-31 #bala:52 #ball:132 #band:22 #bank:-74 #bara:33 #befo:74 #bien:-38 #bill:-101 #blan:-24
#blig:-47 #both:23 #bout:-41 #brak:53 #bran:100 #brar:-107 #brea:-23 #brok:-46 #buck:-40 #cabi:-23 #cali:22 #canc:36
#canz:31 #care:-23 #carg:24 #caro:-29 #cash:-44 #ceit:23 #cela:34 #chan:-37 #char:141 #chea:30 #chec:42 #cial:246
#cias:24 #ciat:-78 #cier:-29 #cion:70 #cker:-25 #clud:30 #cobr:54 #como:72 #comp:40 #cosa:-30 #cost:441 #coti:92
#coun:61 #coup:64 #cove:70 #crib:-22 #ctua:22 #ctur:-39 #cuan:43 #cuat:28 #cuen:82 #cues:22 #cupa:-30 #curi:68
#dari:-27 #days:98 #deal:-41 #debe:-23 #deep:26 #deja:24 #deje:-33 #dejo:-26 #deme:32 #demo:-69 #depe:48 #desc:104
#deti:-22 #diag:40 #dias:-60 #dice:26 #dida:-32 #diga:107 #dila:-57 #dime:40 #dine:-83 #disc:75 #doin:-79 #doll:48
#dond:28 #door:31 #down:-30 #dred:65 #dres:-26 #dria:38 #driv:-36 #dura:-125 #eall:73 #eals:51 #eape:32 #ease:30
#ebaj:27 #eces:-27 #ecia:182 #ecib:-24 #ecio:225 #efor:74 #efun:-77 #eite:24 #ejan:24 #ejem:-23 #ejor:-25 #elar:36
#emin:23 #emor:-65 #empo:-51 #empr:22 #enar:-31 #ends:69 #enen:-28 #engo:-32 #enio:49 #enos:44 #enta:-38 #ento:87
#entr:-47 #epen:47 #eran:41 #erar:-24 #eras:33 #erda:27 #erdi:-41 #ered:51 #eria:62 #erio:-27 #eron:-71 #eros:22
#escu:101 #esda:-28 #espe:44 #esti:210 #esup:25 #eter:33 #etic:48 #etie:-25 #even:-28 #evis:57 #fact:-34 #falt:-24
#favo:-32 #feri:-34 #ffor:-25 #figu:44 #filt:-22 #fina:29 #fine:-23 #firs:26 #flui:-38 #ford:-28 #fore:73 #foun:-27
#four:30 #free:228 #fren:-48 #from:-78 #fron:32 #fter:63 #fund:-79 #game:94 #gast:-70 #gent:-27 #ghly:24 #ging:45
#give:48 #gnme:39 #gnos:40 #goin:101 #gone:22 #grac:23 #gran:-35 #grat:141 #gure:44 #hago:37 #happ:-28 #harg:140
#hatl:36 #head:23 #heap:30 #heck:35 #here:22 #hese:66 #hich:-59 #hici:-27 #high:-83 #hora:72 #hose:-29 #houg:33
#hour:24 #hous:30 #humo:-23 #hund:64 #husb:26 #iagn:40 #iate:-78 #ible:-24 #ices:-55 #icey:-58 #icio:32 #idad:24
#idea:47 #iden:23 #iemp:-37 #iero:-38 #igam:88 #iged:-40 #ight:-63 #ignm:39 #igur:44 #ilat:-57 #ills:-22 #ilte:-30
#imad:147 #imat:83 #imer:24 #inal:26 #incl:35 #iner:-83 #inte:37 #invo:-80 #iosi:38 #irst:26 #isco:79 #isio:39
#izac:59 #just:68 #kept:-54 #kind:23 #king:59 #labo:131 #lace:45 #lado:22 #lars:40 #lata:-30 #lcan:36 #ldri:23
#leas:28 #left:-84 #less:27 #levo:23 #lgun:42 #life:-51 #lige:-41 #lign:39 #line:26 #lkin:37 #llar:48 #lled:24
#llpa:135 #look:49 #lpar:135 #lter:-30 #ltim:-34 #lude:22 #luid:-36 #lune:-24 #mado:133 #make:-23 #mano:31 #many:48
#mate:78 #mber:80 #mbio:29 #medi:-28 #mejo:-25 #meno:55 #meri:35 #mero:40 #mone:-78 #mora:-65 #mpre:27 #much:188
#must:-39 #ncel:30 #nclu:38 #ndan:-23 #nder:80 #ndre:64 #need:-30 #nero:-71 #nger:-64 #ngin:-67 #nior:49 #nles:30
#nmen:39 #noma:65 #noon:22 #nost:22 #nted:30 #ntet:31 #ntos:-60 #numb:83 #nume:55 #nvoi:-65 #nyth:41 #nywa:23
#oble:-24 #obli:-47 #obra:86 #ocke:-23 #oice:-66 #oing:22 #okin:42 #olla:48 #omas:84 #omes:23 #ompr:23 #onde:27
#oney:-78 #onge:-51 #ooki:40 #open:-24 #osti:27 #osto:124 #otal:96 #otiz:92 #ough:65 #ould:69 #ound:-34 #ount:63
#oupo:68 #over:56 #oxim:25 #pads:25 #pago:-32 #pagu:-29 #paid:-110 #para:101 #park:126 #pase:31 #pass:-36 #peci:252
#pend:36 #pera:-27 #perd:-49 #pick:43 #pide:24 #plac:40 #plea:29 #podr:28 #pong:30 #pons:79 #ppre:-72 #prec:148
#pres:51 #pric:125 #prim:26 #prox:24 #pued:-62 #quea:24 #qued:-60 #quic:-23 #quie:-30 #quot:72 #raba:-41 #rake:54
#rand:-48 #rani:23 #rant:60 #raro:-122 #rate:27 #rati:141 #rato:-54 #rdar:-60 #rdid:-35 #read:-30 #reak:-23 #real:79
#reci:114 #reco:-29 #refu:-81 #remi:23 #rena:-26 #rent:-24 #repo:-27 #ress:-30 #resu:23 #revi:57 #rged:-97 #rgen:-27
#rgin:99 #rice:101 #righ:-22 #rime:24 #rios:36 #rito:42 #rive:-34 #robo:-31 #roke:-46 #rong:-36 #ront:30 #roug:35
#roxi:25 #rque:-24 #rran:52 #sabe:39 #said:29 #sald:23 #sale:-61 #sali:-39 #same:28 #satu:24 #says:-26 #sban:26
#scou:76 #scue:101 #seni:48 #seri:85 #shop:-48 #sibl:-23 #sint:31 #sion:41 #spec:260 #sper:-87 #stad:-31 #stan:34
#star:34 #stil:82 #stim:212 #stop:-27 #stoy:-27 #supp:-32 #supu:24 #sure:25 #tado:-41 #take:-53 #talk:34 #tant:33
#tard:-119 #tari:29 #tart:31 #tell:122 #tene:-24 #teng:-37 #tera:39 #teti:31 #than:-42 #that:38 #them:-71 #thes:66
#thin:-23 #thos:-23 #thou:31 #tico:28 #tiem:-54 #tigh:-22 #till:82 #tima:179 #time:-90 #tiza:91 #toma:-73 #took:-30
#tota:96 #trab:-47 #trae:28 #tran:-23 #trea:-30 #truc:24 #tura:-40 #turd:24 #twic:-41 #uand:-53 #uant:109 #uatr:28
#ucks:-39 #ueal:24 #ueda:-112 #uelv:-22 #uent:80 #uest:56 #ughl:24 #ught:-23 #uick:-23 #ulti:-35 #umbe:83 #umer:55
#unde:83 #undr:61 #unes:-24 #unle:31 #unte:-26 #unts:30 #uote:72 #upan:-43 #upon:56 #upue:24 #uran:-73 #urda:24
#urge:-26 #urio:70 #usba:26 #vale:91 #vece:-23 #vemo:25 #vera:35 #vere:51 #very:-30 #vete:36 #vici:25 #vida:-30
#visi:31 #voic:-66 #vuel:-24 #wait:51 #want:55 #warr:64 #what:222 #when:-117 #whic:-59 #wice:-41 #wife:26 #wifi:-63
#will:74 #wise:28 #with:35 #word:-26 #woul:60 #wron:-35 #ythi:44 #yway:23 #zaci:59 #zero:35 %again_later:-22
%again_later%bring:41 %again_later%busy:-25 %again_later%call_off:37 %again_later%doubt:32 %again_later%how_long:70
%again_later%lift:-23 %again_later%money:-82 %again_later%on_way:-25 %again_later%pay_day:44 %again_later%place:22
%again_later%question:36 %again_later%refuse:52 %again_later%season:34 %again_later%start_again:30
%again_later%thanks:-23 %again_later%wrong_one:26 %agree%away:-31 %agree%bad:27 %agree%doubt:47 %agree%gone_car:25
%agree%how_long:31 %agree%machine:23 %agree%money:97 %agree%phone:-26 %agree%place:-54 %agree%question:121
%agree%smoke_smell:-43 %agree%wrong_one:22 %away%bad:-38 %away%bring:-29 %away%car_part:25 %away%do_it:-25
%away%question:27 %away%refuse:36 %away%start_again:26 %bad:-92 %bad%do_it:-33 %bad%meaning:38 %bad%money:-66
%bad%question:-43 %bad%refuse:-27 %bring:28 %bring%call_off:32 %bring%car_part:35 %bring%do_it:48 %bring%money:52
%bring%pay_day:34 %bring%question:76 %bring%start_again:52 %busy%car_part:31 %busy%question:31 %call_off:-77
%call_off%doubt:32 %call_off%leave_me:-28 %call_off%money:31 %call_off%question:38 %call_off%thanks:37 %car:-22
%car%car_part:22 %car%how_long:-28 %car%on_way:-30 %car%pay_day:32 %car%shift_it:27 %car_part%do_it:97
%car_part%doubt:30 %car_part%gone_car:28 %car_part%how_long:28 %car_part%money:112 %car_part%noise:25
%car_part%opening:26 %car_part%phone:34 %car_part%question:62 %car_part%refuse:28 %car_part%shift_it:39 %do_it:-71
%do_it%money:-27 %do_it%on_way:35 %do_it%opening:31 %do_it%question:78 %do_it%season:-24 %do_it%shift_it:75
%do_it%staff:-27 %do_it%wrong_one:-26 %doubt:45 %doubt%elsewhere:23 %doubt%pay_day:23 %doubt%question:48
%doubt%shift_it:22 %elsewhere%money:-46 %elsewhere%place:27 %elsewhere%question:34 %elsewhere%refuse:35
%elsewhere%staff:-22 %fails:-32 %fails%how_long:-55 %fails%money:-40 %fails%question:45 %family%question:54
%family%refuse:46 %family%wrong_one:35 %gone_car:-26 %gone_car%lift:-23 %gone_car%money:32 %gone_car%pay_day:45
%gone_car%question:28 %gone_car%refuse:29 %gone_car%shift_it:36 %how_long:-69 %how_long%lift:34 %how_long%money:-49
%how_long%on_way:-33 %how_long%question:-122 %how_long%shift_it:-22 %how_long%wrong_one:28 %leave_me:-94
%leave_me%money:-27 %lift:-48 %lift%money:-38 %lift%question:-41 %lift%refuse:29 %machine%money:24 %meaning:-89
%meaning%money:69 %meaning%question:-60 %message:-35 %money:472 %money%on_way:73 %money%opening:28 %money%pay_day:-46
%money%phone:66 %money%question:273 %money%shift_it:25 %money%smoke_smell:-29 %money%staff:-32 %money%thanks:29
%money%wrong_one:70 %noise%question:34 %odometer:-36 %on_way%question:-38 %pay_day%question:66 %pay_day%season:23
%pay_day%shift_it:25 %pay_day%wrong_one:34 %phone%wrong_one:22 %place:-25 %place%question:-96 %place%shift_it:27
%question:43 %question%refuse:76 %question%shift_it:100 %question%staff:-27 %question%start_again:105
%question%thanks:61 %question%who:-57 %refuse%shift_it:23 %refuse%thanks:30 %refuse%wrong_one:-38 %shift_it:-30
%shift_it%thanks:-26 %smoke_smell:-71 %staff:-76 %staff%wrong_one:-37 %start_again:74 %thanks:-129 %who:-76
%wrong_one:25 @?:115 @after_visit:-153 @car:32 @confirm:-31 @confirm_stop:-40 @day:-29 @nothing:38 @odometer:-42
@offers:-28 @reading:40 @times:-52 ^_a:89 ^_am:24 ^_any:118 ^_ballpark:98 ^_bank:-54 ^_before:29 ^_call:28 ^_can:44
^_claro:22 ^_cobran:34 ^_como:-64 ^_con:49 ^_cost:33 ^_cuando:-26 ^_cuanto:-197 ^_cuantos:-53 ^_depends:61 ^_did:32
^_do:49 ^_does:74 ^_el:-59 ^_en:-40 ^_es:-31 ^_eso:23 ^_esta:-47 ^_for:-22 ^_free:-38 ^_give:32 ^_going:-27 ^_got:92
^_hay:84 ^_how:-203 ^_i:-128 ^_is:199 ^_it:-36 ^_later:24 ^_le:-39 ^_mas:35 ^_maybe:23 ^_much:-96 ^_muy:-23 ^_need:34
^_no:-50 ^_not:-54 ^_para:26 ^_precio:51 ^_price:38 ^_que:30 ^_quote:66 ^_sale:-210 ^_salir:-59 ^_si:-53 ^_sure:44
^_thank:-23 ^_thanks:-25 ^_that:-62 ^_the:-75 ^_tienen:35 ^_too:-82 ^_we:-23 ^_what:-152 ^_when:-63 ^_which:-47
^_why:-100 ^_y:-61 ^_ya:24 ^_you:-92 a:103 a__el:58 a__es:31 a__filter:-24 a__first:35 a__for:98 a__la:32 a__lo:44
a__off:-29 a__on:37 a__sale:27 a__thing:-24 a_big:-23 a_bot:-26 a_cabin:-25 a_charge:23 a_cobrar:23 a_como:308
a_fee:46 a_hundred:46 a_la:-30 a_las:-141 a_number:84 a_price:48 a_salir:23 a_ser:41 a_set:52 a_tener:-24 a_ver:27
about:-35 abran:-42 afford:-28 afford_it:-27 after:51 ahi:-71 ahi_$:-57 ahora:32 alcanza:39 algo_por:29 algun:42
alignment:47 all:61 all_$:25 all__what:23 all_day:-30 alla:-25 am:70 am__going:28 am_i:79 an:132 an__change:46
an_estimate:40 an_oil:45 and:186 and__are:-24 and__i:33 and__is:46 and__much:75 and_do:35 and_how:111 and_what:76
and_you:-35 anda:60 anda_$:22 any:277 any__for:53 anything:41 anything_$:31 anyway:23 anyway_$:32 appreciated:-60
are:41 are_$:-26 are__a:-22 are__charging:102 are_they:-23 are_we:28 are_you:49 at:35 at_it:32 at_the:-26 at_your:23
back_$:23 bad:30 balatas:25 ballpark:135 ballpark_$:86 bank:-74 bank__it:-42 barato:33 be:25 be_$:108 be__to:-31
be_a:-30 be_doing:-65 before:66 before__say:29 before_i:77 bien:-32 big:-36 big_deal:-30 bill:-102 bill_$:30
bill_was:-32 bot:-26 bot_$:-25 both:23 brakes:36 break:-23 bring_the:27 broke:-38 bucks:-39 but:-42 but_the:-29
by:-36 cabin:-28 cabin_filter:-25 call__with:29 call_me:23 can:75 can__get:68 can__give:23 can__my:25 can_you:33
cancelar:36 cancelar_$:24 cant_afford:-24 car:-31 cargo:30 caro:-22 caro_$:-32 carro:-23 carro_$:-25 cash:-44
change:48 changing:-54 charge:135 charge_$:24 charge_for:36 charge_to:42 charged:-82 charged__for:-30 charged_me:-43
charging:99 cheaper:32 check:22 cobran:155 cobran__por:35 cobran_algo:35 cobran_por:59 cobraron:-122
cobraron__mas:-42 cobraron_de:-42 come:-23 come_$:-40 come__with:28 come_to:46 como:73 como_$:60 como__me:-23
como__se:-30 como_a:-24 como_cuanto:-143 como_el:44 como_es:24 como_la:27 como_lo:29 como_sale:27 con:66 con_la:31
cosa:-28 cost:294 cost_$:124 cost_and:41 costo:125 costo_$:34 costo_y:45 cotizacion:59 could_you:29 covered:52
cuando:-53 cuanto:133 cuanto_$:46 cuanto__a:36 cuanto__el:50 cuanto__es:-34 cuanto__las:25 cuanto__lleva:-25
cuanto__me:-133 cuanto__para:26 cuanto__por:42 cuanto__que:35 cuanto__queda:-65 cuanto__tardan:-33 cuanto__tengo:-28
cuanto__y:119 cuanto_anda:44 cuanto_cobran:23 cuanto_cuesta:49 cuanto_demora:-57 cuanto_dura:-58 cuanto_era:39
cuanto_es:145 cuanto_mas:-79 cuanto_por:102 cuanto_rato:-88 cuanto_sale:55 cuanto_se:-184 cuanto_seria:101
cuanto_tardan:-22 cuanto_tengo:25 cuanto_tiempo:-107 cuanto_toma:-39 cuanto_va:34 cuanto_vale:66 cuantos:-60
cuantos_dias:-55 cuatro:28 cuesta_y:24 curious:27 da:109 dad:22 damage:26 dan:29 dar:27 day:-32 days:80 days_$:88
de:115 de_$:27 de__a:-24 de__como:40 de__de:24 de__es:27 de_a:33 de_aceite:31 de_cuanto:28 de_la:-29 de_mas:-44
de_obra:34 de_que:-28 de_veras:24 de_verdad:26 de_vida:-24 deal:-70 deal_$:-28 deep:26 dejan:22 dejo:-26 demora:-59
demora_$:-49 depends:61 descuento:94 dia:-36 dia_$:-26 dias:-60 dice:30 did:-41 did__say:36 did_it:-26 did_my:-55
digame:88 digame__precio:25 digame_cuanto:39 digame_el:31 dilatan:-45 dime:40 dinero:-84 dinero_$:-47 discount:45
do:72 do_$:-77 do__charge:69 do__get:56 do__go:29 do__guys:49 do__need:-49 do__owe:31 do__pay:41 do__take:-46
do__use:-27 do_i:65 do_you:68 does__cost:50 doing:-79 doing_$:-34 doing__it:-37 doing_to:-37 dollars:40 dollars_$:41
donde:28 donde_estan:65 done_$:-22 door:32 down:-33 down_on:-22 drive:-28 due:-39 due_for:-28 dura:-54 el:118
el__a:-41 el__de:56 el__en:22 el__para:45 el_cambio:28 el_costo:78 el_dinero:-43 el_lunes:-35 el_otro:38 el_precio:78
el_total:46 el_trabajo:-24 en:49 en__anda:38 en__me:59 en__se:-55 en_cuanto:65 era:43 era_$:29 es:107 es_$:30
es__de:22 es_de:-29 es_eso:-29 es_gratis:138 es_la:25 es_que:-25 es_un:-39 es_y:57 eso_$:-29 eso_es:22 especial:35
esperar:-23 esperar_$:-22 espero:-56 espero_$:-54 esta:-47 estan:40 estar:-26 estimado:130 estimado_$:82 estimate:83
estimate_$:47 estoy:-27 ever:27 factura:-34 fee:85 feria:-34 figure:44 filter:-33 filter_$:-24 final:26 fine:-23
first:26 first_$:26 fluid:-37 for:64 for_$:-120 for__days:34 for_a:43 for_all:27 for_me:-53 for_that:45 for_the:48
for_these:34 for_this:27 for_what:-47 found:-27 four:31 free:237 free_$:211 free_or:40 frenar:-28 frenar_$:-28
friday_$:-24 from:-78 from_the:-53 fue:-34 gasto:-40 get:50 get__a:35 get_a:65 get_for:95 get_paid:-55 give:52
give_me:46 go_for:81 going:101 going_on:36 going_to:71 gone:22 got_a:-25 got_any:74 got_to:32 gracias:24 grand:-33
grand_$:-33 gratis:141 gratis_$:113 guys_have:49 hablan:-22 hace:44 hago:37 hago_$:37 hay:109 hicieron:-27 high:-29
high_$:-27 hora:38 hora_de:27 how:200 how__and:61 how__do:38 how__how:25 how__i:-46 how__is:42 how__it:-35
how__longer:-51 how__time:-86 how__to:37 how__was:41 how__we:23 how__you:-30 how_come:-89 how_do:-58 how_is:-30
how_long:27 how_many:49 how_much:373 hoy:-22 hundred:52 husband:26 i__a:43 i__anything:36 i__for:28 i__it:-36
i__paid:-58 i__the:27 i__there:-25 i__to:46 i_can:43 i_going:28 i_have:-24 i_owe:51 i_paid:-31 i_pay:32 i_say:29
i_was:-44 idea:48 if:37 if_i:27 ill:27 im:-31 im_not:-34 in__what:35 in_the:-36 invoice:-65 invoice_$:-39 ir:24
is:-33 is__address:-32 is__bill:24 is__cost:32 is__do:-45 is__fluid:-23 is__for:-77 is__free:149 is__going:40
is__is:24 is__labor:73 is__oil:37 is__on:-37 is__price:40 is__really:60 is__run:151 is__still:71 is__than:-49
is__total:30 is__wifi:-48 is__with:-25 is_a:-41 is_an:51 is_it:96 is_on:-23 is_that:87 is_the:87 is_there:76
is_this:-47 is_too:-25 is_wrong:-32 it:84 it_$:-50 it__be:30 it__free:72 it__like:33 it__or:23 it__the:-23 it__to:-30
it__under:112 it_a:-67 it_anyway:43 it_back:-22 it_be:54 it_cost:62 it_do:-51 it_for:-76 it_is:-30 it_really:50
it_run:62 it_still:69 job:47 just:71 just__what:23 just_curious:27 kept:-54 la__de:39 la__y:27 la_cara:-32
la_factura:-32 la_hago:38 la_hora:31 la_otra:24 la_revision:43 la_ultima:-33 labor:131 labor_$:96 lado:22 las:-24
las_$:-70 las_cuatro:22 las_dos:27 late:-24 le:-107 le__a:-24 le_cuesta:-28 le_sale:-25 left:-84 left_on:-52 les:-63
life:-51 like_the:25 lleva:-26 llevo:23 lo:-92 lo__que:30 lo_ocupan:-43 lo_que:-45 long:42 long_$:71 long__how:23
long__it:-23 longer:-52 longer_$:-31 look__it:33 look_at:31 looking:52 looking_at:45 lunes:-24 mandan:-25 mano:31
mano__obra:34 mano_de:34 many:48 mas:-55 mas_$:-54 mas__menos:38 mas_barato:32 mas_de:38 mas_o:38 me_$:37 me__a:31
me__cuanto:37 me__dar:31 me__de:-45 me__muy:24 me__price:44 me__que:-49 me__the:23 me__un:61 me__una:27 me__what:27
me_a:-33 me_back:66 me_cobran:40 me_cobraron:-111 me_da:118 me_dice:32 me_espero:-54 me_for:-41 me_hace:25 me_lo:-59
me_mandan:-24 me_now:-33 me_puede:33 me_sale:49 me_the:60 me_van:30 me_with:68 mean:-22 mejor:-24 menos:55 mes:26
mi:-25 money:-75 money_$:-56 money_wise:27 much:179 much_$:55 much__how:45 much__i:32 much__is:-63 much__it:114
much__my:-24 much__the:37 much_and:43 much_for:56 much_is:103 much_longer:-51 much_obliged:-40 much_time:-86
much_to:46 much_would:31 must:-39 muy:-41 muy_caro:-45 my:-73 my__go:-53 my__is:-61 my_bill:-109 my_dad:23
my_invoice:-23 my_warranty:63 n:38 need_$:-53 need_a:35 no_$:-29 no__is:-79 no_but:24 no_thanks:36 no_what:-72
nomas:65 not:-98 not__to:-23 not_at:-47 now:-78 now_$:-76 number:73 number_$:48 number__the:23 o:71 o_menos:38
obliged:-40 obliged_$:-35 obra:33 obra_$:26 ocupan:-43 ocupan_$:-43 of_my:-41 off:-59 off_$:-55 oh:-23 oil:22
oil_change:55 ok:-42 ok_$:-22 on_$:42 on_the:-23 on_what:30 one:29 one__much:25 or:131 or_$:29 or__i:24 or_do:25
otro__mas:-36 out:48 out__door:36 out_of:24 out_the:35 pads:25 pague:-30 paid:-105 paid_$:-65 para:87 pay_$:41
perdida:-34 perdida_total:-34 pero:46 pick:29 pick__up:28 place:49 place_$:22 please:41 please_$:64 por:220
por__y:-24 precio:232 precio_$:60 precio_de:30 precio_y:42 presupuesto:25 price:217 price_$:90 price_and:24
price_on:26 prices:-53 pricey:-58 primero:27 pueda:-56 pueda_$:-56 puede__el:24 que:-144 que__caro:73 que__eso:-25
que__otro:-25 que_es:-43 que_esperar:-22 que_la:30 que_le:-23 que_precio:47 que_tan:36 que_tanto:43 queda:-69
queda_$:-61 quien:-29 quiero_saber:30 quote:81 quote_$:-61 rate:32 rato:-94 rato_me:-51 really:73 really_free:70
refund:-77 refund_$:-57 remind:28 remind_me:28 revision:43 right:-23 right_now:-40 ring:-23 rough:31 roughly:24
run:284 run_$:177 run_me:75 saber:46 said:29 said_$:34 sale:-75 sale_mas:33 sale_y:27 salir:-49 salir_$:-37 same:30
sat:24 saturday:25 say:69 says:-26 se:-209 se_lleva:-25 se_pueda:-55 se_queda:-27 send__a:27 send_me:30 ser:49
ser_$:31 seria:108 seria_$:38 serious:-22 servicio:25 set:105 set__back:63 set_me:63 set_of:52 shop:-47 si:73
si__favor:-22 si_por:-22 sintetico:31 so:-46 so_i:27 so_much:-54 still:83 still_$:50 still__the:22 stop:-24 sure:40
sure__it:43 take:-60 tan:35 tan__es:37 tan__estan:-23 tan_caro:69 tanto:40 tarda:-38 tarda_$:-24 tardan:-23
tardan_$:-23 tax:84 tax_$:87 tell:120 tell__the:31 tell_me:80 tempranito:25 tener:-24 tengo:-28 th_$:-27 th_and:23
than:-34 than_the:-32 thank__so:-26 that:39 that_$:-97 that__be:-38 that__me:26 that__to:70 that_be:41 that_going:56
that_is:-52 that_would:-36 the:87 the__and:54 the__before:26 the__in:24 the__is:-22 the__was:-35 the_address:-25
the_bill:42 the_cost:39 the_damage:23 the_door:34 the_invoice:-28 the_price:32 the_quote:-81 the_th:-22 the_tires:-32
the_total:32 them:-71 them_$:-73 there:24 there_$:-35 there__charge:25 there__fee:46 there_a:81 these:66
these_days:89 thing:-58 thing_$:-22 this_one:31 those:-23 though:40 though_$:24 tiempo:-52 tiene:39 tienen_$:-30
tight:-22 time:-105 time__it:-33 time__you:-61 time_do:-66 tires_$:-27 to:36 to_$:31 to__at:41 to__for:-48 to__me:44
to__out:27 to_it:-45 to_look:61 to_pay:-23 to_set:35 toma:-49 toma_$:-33 too:-168 too__for:-60 too_much:-78 took:-30
took_it:-22 top:-22 total:101 trabajo:-28 trae:29 tread:-28 twice:-41 twice_$:-37 ultima:-33 ultima_vez:-25 un:41
un_estimado:94 una:46 under:89 under_my:55 unless:31 unless__is:27 unless_it:27 up:35 up_$:35 up__is:22 va:50
va__salir:28 va__ser:32 va_a:61 vale:95 vale_$:38 van__cobrar:27 van__tener:-23 veces:-23 vemos:25 ver:22 veras:24
verdad:25 verdad_$:23 very:-32 vida:-25 wait:39 want:23 wanted:25 warranty:64 warranty_$:42 was:-60 was_it:34
we_talking:23 what:168 what_$:-69 what__an:54 what__i:100 what__is:-63 what__it:-40 what__my:27 what__that:62
what__the:86 what__you:134 what_a:-34 what_am:51 what_are:91 what_do:149 what_for:-60 what_i:-34 what_it:27
what_time:-37 what_will:43 what_would:182 when:-115 when__get:-66 when_i:-69 which:-58 why:-98 why_$:-39 wife:26
wifi:-63 wifi_$:-44 will:74 will__be:52 will_it:62 wise:28 wise_$:31 with:49 with_a:26 with_tax:76 would:56
would_be:-41 would_that:72 would_the:34 would_you:-37 wow:-22 wrong:-35 wrong_with:-25 y:301 y__a:26 y__dura:-23
y__estan:55 y__por:61 y_a:38 y_como:-62 y_cuanto:70 y_de:52 y_donde:46 y_en:32 y_si:22 y_tiempo:56 ya_con:22
yes_$:-40 yes__it:53 yes__the:-33 yes_but:-27 you:-54 you_$:-33 you__bot:-24 you__for:154 you__have:48 you__it:29
you__me:-34 you__much:-36 you__my:-35 you__or:30 you__the:-28 you__to:23 you_a:-24 you_are:-28 you_be:-59
you_charge:87 you_charged:-36 you_charging:102 you_get:66 you_guys:23 you_need:-59 you_say:32 you_so:-26 you_take:-46
you_use:-23 you_want:25 your_place:23
"""
