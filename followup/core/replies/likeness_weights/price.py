"""What speaks for and against `price`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "price"
BIAS = -190
WEIGHTS = """\
#abaj:-54 #aber:46 #abin:-27 #abor:132 #abou:-40 #abra:-49 #acei:28 #acer:-28 #acio:52 #affo:-31 #afte:65 #agno:40
#ague:-30 #ahor:45 #akes:41 #alat:25 #alca:37 #ales:74 #algu:44 #alig:40 #alir:-51 #alki:41 #alla:-26 #allp:151
#ally:86 #alon:25 #ance:45 #anda:58 #ando:-25 #ange:52 #angi:-58 #anit:25 #anta:28 #anto:112 #anty:62 #anyt:42
#anza:41 #aper:28 #appr:-73 #arat:39 #arch:37 #arda:-142 #arge:52 #argi:97 #argo:31 #aron:-164 #arra:63 #arro:-27
#asta:-34 #asto:-40 #atan:-46 #atas:26 #atch:42 #ated:-69 #atis:146 #atll:36 #atro:28 #avor:-25 #bajo:-33 #bala:53
#ball:148 #bank:-72 #bara:30 #befo:78 #bien:-41 #bill:-107 #blan:-30 #blig:-49 #bout:-54 #brak:59 #bran:108
#brar:-104 #brok:-50 #buck:-39 #cabi:-27 #canc:36 #canz:32 #carg:25 #caro:-37 #cash:-43 #ceit:28 #cela:34 #chan:-32
#char:150 #chea:32 #chec:41 #cial:246 #ciat:-77 #cier:-29 #cion:71 #clud:30 #cobr:65 #como:75 #comp:39 #cosa:-29
#cost:464 #coti:91 #coun:60 #coup:66 #cove:70 #ctur:-37 #cuan:38 #cuat:28 #cuen:84 #cues:25 #cupa:-32 #curi:69
#dari:-27 #days:98 #deal:-41 #deep:27 #deje:-34 #dejo:-26 #deme:31 #demo:-69 #depe:49 #desc:104 #deti:-25 #diag:40
#dias:-58 #dice:27 #dida:-34 #diga:111 #dila:-58 #dime:40 #dine:-86 #disc:73 #doin:-78 #doll:48 #dond:26 #door:31
#down:-30 #dred:64 #dres:-30 #dria:38 #driv:-41 #dura:-124 #eall:76 #eals:50 #eape:33 #ease:30 #ebaj:28 #eces:-27
#ecia:183 #ecio:247 #efor:78 #efun:-76 #eite:28 #ejor:-25 #elar:36 #emor:-65 #empo:-70 #enar:-30 #ends:70 #enen:-31
#engo:-32 #enio:48 #enos:46 #enta:-37 #ento:87 #entr:-48 #epen:48 #eran:41 #eras:33 #erda:27 #erdi:-42 #ered:50
#eria:69 #erio:-28 #eron:-70 #escu:101 #esda:-33 #espe:45 #esti:217 #esup:25 #eter:34 #etic:48 #etie:-27 #even:-28
#evis:60 #fact:-32 #favo:-25 #feri:-33 #ffor:-28 #figu:44 #fina:29 #firs:31 #flui:-37 #ford:-31 #fore:78 #foun:-26
#four:28 #free:233 #fren:-47 #from:-80 #fron:33 #fter:65 #fund:-78 #game:98 #gast:-67 #gent:-30 #ging:43 #give:50
#gnme:40 #gnos:40 #goin:109 #gran:-35 #grat:146 #gure:44 #hago:37 #happ:-29 #harg:150 #hatl:36 #heap:31 #heck:35
#hese:64 #hich:-61 #hici:-28 #high:-82 #hora:63 #hose:-28 #houg:35 #hous:29 #humo:-28 #hund:64 #husb:26 #iagn:40
#iate:-77 #ices:-53 #icey:-56 #icio:32 #idea:47 #iemp:-57 #iero:-39 #igam:92 #iged:-43 #ight:-79 #ignm:40 #igur:44
#ilat:-58 #ilte:-33 #imad:146 #imat:91 #inal:26 #incl:36 #iner:-86 #inte:37 #invo:-77 #iosi:38 #irst:31 #isco:78
#isio:38 #izac:57 #just:71 #kept:-54 #king:61 #labo:132 #lace:45 #lars:40 #lata:-30 #lcan:37 #leas:28 #left:-83
#less:26 #lgun:42 #life:-50 #lige:-43 #lign:40 #line:27 #lkin:41 #llar:48 #lled:25 #llpa:151 #look:53 #lpar:151
#lter:-33 #ltim:-34 #luid:-34 #mado:132 #mano:32 #many:48 #mate:85 #mber:80 #mbio:33 #medi:-26 #mejo:-25 #meno:56
#meri:35 #mero:39 #mone:-100 #mora:-65 #mpre:27 #much:237 #must:-40 #ncel:31 #nclu:39 #nder:76 #ndre:64 #need:-26
#nero:-74 #nger:-65 #ngin:-68 #nior:48 #nles:30 #nmen:40 #noma:66 #nted:30 #ntet:31 #ntos:-58 #numb:83 #nume:55
#nvoi:-64 #nyth:43 #obli:-49 #obra:97 #oice:-64 #oing:32 #okin:44 #olla:48 #omas:86 #oney:-100 #onge:-51 #ooki:43
#open:-27 #osti:27 #osto:127 #otal:94 #otiz:91 #ough:68 #ould:84 #ound:-36 #ount:62 #oupo:69 #over:57 #oxim:25
#pads:25 #pago:-31 #pagu:-30 #paid:-115 #para:103 #park:142 #pase:30 #pass:-34 #peci:252 #pend:37 #pera:-27 #perd:-51
#pick:45 #plac:40 #plea:30 #podr:28 #pong:30 #pons:80 #ppre:-72 #prec:170 #pres:52 #pric:134 #prim:26 #pued:-60
#quea:25 #qued:-63 #quie:-34 #quot:70 #raba:-43 #rake:60 #rand:-47 #rant:59 #raro:-119 #rate:28 #rati:145 #rato:-53
#rdan:-29 #rdar:-59 #rdid:-37 #read:-31 #real:81 #reci:138 #reco:-29 #refu:-80 #rena:-25 #repo:-26 #ress:-33 #revi:59
#rged:-94 #rgen:-29 #rgin:97 #rice:110 #rios:36 #rito:42 #rive:-38 #robo:-30 #roke:-50 #rong:-39 #ront:30 #roug:37
#roxi:25 #rran:49 #sabe:39 #said:29 #sale:-80 #sali:-41 #same:27 #satu:25 #says:-26 #sban:26 #scou:74 #scue:102
#seni:48 #seri:88 #shop:-49 #sint:31 #sion:41 #spec:264 #sper:-85 #stad:-31 #stan:34 #star:36 #stil:81 #stim:219
#stop:-29 #stoy:-28 #supp:-31 #sure:28 #tado:-40 #take:-54 #talk:38 #tant:34 #tard:-142 #tari:30 #tart:31 #tell:123
#teng:-38 #tera:38 #teti:31 #than:-52 #that:45 #them:-70 #thes:64 #thou:33 #tico:28 #tiem:-73 #tigh:-34 #till:82
#tima:187 #time:-94 #tiza:90 #toma:-76 #took:-29 #tota:94 #trab:-50 #trae:28 #trea:-30 #tura:-38 #turd:25 #twic:-40
#uand:-55 #uant:87 #uatr:28 #ucks:-39 #ueda:-113 #uent:83 #uest:59 #ulti:-34 #umbe:83 #umer:55 #unde:81 #undr:61
#unle:30 #unts:29 #uote:70 #upan:-46 #upon:58 #uran:-72 #urda:25 #urge:-29 #urio:71 #usba:26 #vale:92 #vemo:25
#vera:35 #vere:51 #very:-32 #vete:36 #vida:-29 #visi:31 #voic:-64 #wait:48 #want:56 #warr:62 #what:226 #when:-123
#whic:-61 #wice:-40 #wife:26 #wifi:-66 #will:79 #wise:27 #with:38 #word:-26 #woul:72 #wron:-38 #ythi:47 #zaci:57
#zero:35 %again_later%bring:40 %again_later%call_off:35 %again_later%doubt:32 %again_later%how_long:66
%again_later%money:-74 %again_later%on_way:-25 %again_later%pay_day:41 %again_later%question:41
%again_later%refuse:49 %again_later%season:32 %again_later%start_again:32 %again_later%wrong_one:27 %agree%away:-32
%agree%bad:27 %agree%doubt:48 %agree%gone_car:26 %agree%how_long:29 %agree%money:87 %agree%phone:-26 %agree%place:-55
%agree%question:155 %agree%smoke_smell:-51 %away%bad:-41 %away%bring:-28 %away%do_it:-25 %away%question:27
%away%refuse:36 %away%start_again:26 %bad:-107 %bad%do_it:-33 %bad%meaning:32 %bad%money:-69 %bad%question:-48
%bad%refuse:-28 %bring:33 %bring%call_off:34 %bring%car_part:36 %bring%do_it:50 %bring%money:56 %bring%pay_day:35
%bring%question:79 %bring%start_again:53 %busy%car_part:31 %busy%question:31 %call_off:-69 %call_off%doubt:32
%call_off%leave_me:-28 %call_off%money:45 %call_off%question:57 %call_off%thanks:37 %car%how_long:-29 %car%on_way:-30
%car%pay_day:30 %car%shift_it:28 %car_part%do_it:105 %car_part%doubt:30 %car_part%gone_car:28 %car_part%how_long:27
%car_part%money:122 %car_part%opening:26 %car_part%phone:34 %car_part%question:84 %car_part%refuse:30
%car_part%shift_it:48 %do_it:-62 %do_it%on_way:34 %do_it%opening:31 %do_it%question:93 %do_it%shift_it:83
%do_it%staff:-27 %do_it%wrong_one:-25 %doubt:47 %doubt%question:49 %elsewhere%money:-42 %elsewhere%place:26
%elsewhere%question:34 %elsewhere%refuse:35 %fails:-40 %fails%how_long:-56 %fails%money:-42 %fails%question:42
%family%question:52 %family%refuse:47 %family%wrong_one:35 %gone_car:-31 %gone_car%money:36 %gone_car%pay_day:44
%gone_car%question:33 %gone_car%refuse:27 %gone_car%shift_it:36 %how_long:-128 %how_long%lift:31 %how_long%money:-91
%how_long%on_way:-33 %how_long%question:-176 %how_long%wrong_one:28 %leave_me:-108 %leave_me%money:-33 %lift:-47
%lift%money:-37 %lift%question:-41 %lift%refuse:29 %meaning:-115 %meaning%money:68 %meaning%question:-76 %message:-37
%money:509 %money%on_way:77 %money%opening:27 %money%pay_day:-52 %money%phone:70 %money%question:316
%money%shift_it:32 %money%smoke_smell:-38 %money%staff:-28 %money%wrong_one:74 %noise%question:32 %odometer:-40
%on_way%question:-39 %opening:-27 %pay_day%question:68 %pay_day%shift_it:25 %pay_day%wrong_one:35 %place:-44
%place%question:-109 %place%shift_it:28 %question:62 %question%refuse:88 %question%shift_it:109 %question%staff:-25
%question%start_again:108 %question%thanks:63 %question%who:-71 %refuse%shift_it:25 %refuse%thanks:26
%refuse%wrong_one:-37 %smoke_smell:-83 %staff:-75 %staff%wrong_one:-35 %start_again:76 %thanks:-151 %who:-93
%wrong_one:29 @?:169 @after_visit:-158 @car:33 @confirm:-25 @confirm_stop:-41 @nothing:46 @odometer:-42 @reading:36
@times:-35 ^_a:95 ^_am:25 ^_any:122 ^_ballpark:113 ^_bank:-52 ^_before:31 ^_call:27 ^_can:48 ^_cobran:36 ^_como:-68
^_con:50 ^_cost:39 ^_cuando:-27 ^_cuanto:-220 ^_cuantos:-52 ^_depends:62 ^_did:32 ^_do:51 ^_does:76 ^_el:-56 ^_en:-42
^_esta:-58 ^_free:-38 ^_gimme:25 ^_give:32 ^_going:-26 ^_got:94 ^_hay:84 ^_how:-195 ^_i:-133 ^_is:210 ^_it:-37
^_later:25 ^_le:-44 ^_mas:37 ^_much:-96 ^_need:34 ^_no:-42 ^_not:-56 ^_oh:-25 ^_para:25 ^_precio:59 ^_price:42
^_que:33 ^_quote:65 ^_sale:-214 ^_salir:-60 ^_si:-46 ^_sure:45 ^_thank:-31 ^_thanks:-26 ^_that:-60 ^_the:-76
^_tienen:32 ^_too:-80 ^_what:-166 ^_when:-65 ^_which:-49 ^_why:-107 ^_y:-54 ^_you:-100 a:134 a__el:58 a__es:31
a__filter:-28 a__first:34 a__for:101 a__la:33 a__lo:44 a__off:-28 a__on:37 a__sale:30 a_bot:-25 a_cabin:-29
a_charge:29 a_como:312 a_fee:46 a_hundred:46 a_la:-29 a_las:-139 a_number:84 a_price:50 a_ser:43 a_set:52 a_ver:27
about:-46 abran:-43 address_$:-25 afford:-31 afford_it:-30 after:52 ahi:-73 ahi_$:-59 ahora:30 alcanza:40 algo_por:29
algun:42 alignment:47 all:63 all_$:25 all_day:-30 alla:-25 am:74 am__going:28 am_i:80 an:140 an__change:50
an_estimate:42 an_oil:50 and:201 and__i:34 and__is:45 and__long:25 and__much:80 and_do:35 and_how:120 and_what:78
and_you:-33 anda:64 anda_$:25 any:280 any__for:53 anything:43 anything_$:32 anyway_$:33 appreciated:-58 are:38
are__charging:100 are_they:-25 are_we:29 are_you:45 at:41 at_it:31 at_the:-25 balatas:26 ballpark:151 ballpark_$:102
bank:-72 bank__it:-41 barato:31 be:39 be_$:116 be__to:-31 be_a:-29 be_doing:-64 before:71 before__say:29 before_i:78
bien:-36 big:-37 big_deal:-30 bill:-109 bill_$:25 bill_was:-35 bot:-25 bot_$:-25 both:25 brakes:40 bring_the:27
broke:-40 bucks:-39 but:-35 but__much:26 but_the:-28 by:-35 cabin:-32 cabin_filter:-28 call__with:29 can:79
can__get:69 can__my:25 can_you:33 cancelar:36 cant_afford:-25 car:-32 cargo:31 caro:-29 caro_$:-33 carro:-26
carro_$:-27 cash:-43 change:53 changing:-54 charge:143 charge_$:27 charge_for:42 charge_to:41 charged:-80
charged__for:-30 charged_me:-43 charging:97 cheaper:33 cobran:162 cobran__por:35 cobran_algo:35 cobran_por:64
cobraron:-118 cobraron__mas:-42 cobraron_de:-42 come_$:-39 come__with:28 come_to:46 como:75 como_$:61 como__se:-33
como_cuanto:-146 como_el:44 como_la:27 como_lo:30 como_sale:30 con:67 con_la:32 cosa:-27 cost:312 cost_$:135
cost_and:42 costo:128 costo_$:35 costo_y:45 cotizacion:57 could_you:30 covered:51 cuando:-55 cuanto:129 cuanto_$:47
cuanto__a:37 cuanto__el:52 cuanto__es:-37 cuanto__las:25 cuanto__me:-132 cuanto__para:26 cuanto__por:44
cuanto__que:36 cuanto__queda:-65 cuanto__tardan:-50 cuanto__tengo:-26 cuanto__y:120 cuanto_anda:47 cuanto_cobran:25
cuanto_cuesta:50 cuanto_demora:-57 cuanto_dura:-59 cuanto_era:39 cuanto_es:149 cuanto_mas:-79 cuanto_por:104
cuanto_rato:-85 cuanto_sale:55 cuanto_se:-202 cuanto_seria:105 cuanto_tengo:26 cuanto_tiempo:-124 cuanto_toma:-39
cuanto_va:35 cuanto_vale:66 cuantos:-57 cuantos_dias:-54 cuatro:28 curious:28 da:109 damage:27 dan:30 dar:30 day:-32
days:78 days_$:87 de:136 de_$:27 de__como:40 de__de:25 de__es:26 de_a:34 de_aceite:33 de_cuanto:29 de_la:-27
de_mas:-43 de_obra:34 de_que:-28 de_verdad:26 deal:-68 deal_$:-27 deep:27 dejo:-26 demora:-59 demora_$:-49 depends:62
descuento:94 dia:-38 dia_$:-30 dias:-58 dice:30 did:-39 did__say:37 did_it:-27 did_my:-54 digame:92 digame__precio:27
digame_cuanto:41 digame_el:32 dilatan:-46 dime:40 dinero:-87 dinero_$:-48 discount:44 do:76 do_$:-75 do__charge:70
do__get:52 do__go:29 do__guys:48 do__need:-47 do__owe:31 do__pay:40 do__take:-44 do__use:-26 do_i:61 do_you:68
does__cost:51 doing:-78 doing_$:-33 doing__it:-37 doing_to:-37 dollars:40 dollars_$:41 donde:26 donde_estan:65
door:32 down:-33 drive:-32 due:-38 due_for:-27 dura:-54 el:132 el__a:-41 el__de:59 el__para:45 el_cambio:30
el_costo:78 el_dinero:-41 el_lunes:-34 el_otro:38 el_precio:83 el_total:46 en:48 en__anda:42 en__me:60 en__se:-53
en_cuanto:68 era:43 era_$:29 es:117 es_$:26 es_de:-27 es_eso:-28 es_gratis:142 es_que:-25 es_un:-38 es_y:57 eso_$:-27
especial:35 espero:-56 espero_$:-53 esta:-60 esta__caro:-33 estan:39 estar:-25 estimado:129 estimado_$:82 estimate:91
estimate_$:49 estoy:-27 ever:27 factura:-32 fee:85 feria:-33 figure:44 filter:-36 filter_$:-27 final:26 first:31
first_$:29 fluid:-36 for:90 for_$:-115 for__days:34 for_a:44 for_all:29 for_me:-51 for_that:47 for_the:50
for_these:34 for_this:27 for_what:-47 found:-26 four:29 free:242 free_$:216 free_or:40 frenar:-26 frenar_$:-26
friday_$:-26 from:-80 from_the:-54 fue:-35 gasto:-37 get:44 get__a:35 get_a:63 get_for:94 get_paid:-58 give:54
give_me:47 go_for:81 going:109 going_on:36 going_to:77 got_any:73 got_to:33 grand:-33 grand_$:-33 gratis:146
gratis_$:116 guys_have:48 hace:44 hago:37 hago_$:38 hay:111 hicieron:-27 high:-28 high_$:-26 hora:33 hora_de:27
how:236 how__and:64 how__do:38 how__for:25 how__how:25 how__i:-50 how__is:51 how__it:-35 how__longer:-50
how__time:-83 how__to:39 how__was:42 how__we:27 how__you:-30 how_come:-88 how_do:-62 how_is:-35 how_long:26
how_many:48 how_much:426 humo:-26 hundred:52 husband:26 i__a:43 i__anything:36 i__for:28 i__it:-38 i__paid:-61
i__the:27 i__there:-26 i__to:47 i_can:42 i_going:28 i_owe:52 i_paid:-32 i_pay:31 i_say:29 i_was:-42 idea:48 if:37
if_i:27 ill:26 im:-32 im_not:-33 in__what:36 in_the:-35 invoice:-64 invoice_$:-38 is:-43 is__a:25 is__address:-36
is__cost:34 is__do:-44 is__for:-75 is__free:152 is__going:43 is__labor:72 is__oil:40 is__on:-35 is__price:42
is__really:62 is__run:148 is__still:72 is__than:-49 is__total:30 is__wifi:-47 is__with:-26 is_a:-41 is_an:54
is_it:107 is_that:87 is_the:90 is_there:83 is_this:-54 is_tight:-31 is_too:-25 is_wrong:-33 it:99 it_$:-51 it__be:30
it__free:73 it__like:32 it__to:-29 it__under:111 it_a:-65 it_anyway:43 it_be:61 it_cost:68 it_do:-49 it_for:-75
it_is:-35 it_really:52 it_run:62 it_still:69 job:48 just:74 just_curious:28 kept:-54 la__de:40 la__y:28 la_cara:-30
la_factura:-31 la_hago:39 la_hora:30 la_otra:25 la_revision:42 la_ultima:-32 labor:132 labor_$:97 las_$:-72
las_dos:27 late:-26 le:-114 le_cuesta:-26 le_sale:-34 left:-83 left_on:-51 les:-62 life:-50 like_the:25 lleva:-25
lo:-99 lo__que:31 lo_ocupan:-45 lo_que:-44 long:41 long_$:75 longer:-52 longer_$:-30 look__it:32 look_at:31
looking:56 looking_at:47 mano:32 mano__obra:34 mano_de:34 many:48 mas:-45 mas_$:-52 mas__menos:42 mas_barato:33
mas_de:39 mas_o:42 me:39 me_$:39 me__a:32 me__cuanto:38 me__dar:34 me__de:-44 me__muy:26 me__price:44 me__que:-46
me__un:63 me__una:27 me__what:27 me_a:-31 me_back:66 me_cobran:40 me_cobraron:-108 me_da:118 me_dice:33 me_espero:-53
me_for:-40 me_lo:-60 me_now:-33 me_puede:36 me_sale:52 me_the:60 me_van:29 me_with:68 mean:-28 mejor:-25 menos:56
mes:25 mi:-28 money:-96 money_$:-64 money__tight:-32 money_is:-32 money_wise:26 much:226 much_$:54 much__how:48
much__i:34 much__is:-61 much__it:132 much__the:38 much_and:46 much_for:59 much_is:118 much_longer:-50
much_obliged:-43 much_time:-83 much_to:48 much_would:38 must:-40 muy:-49 muy_caro:-52 my:-81 my__go:-53 my__is:-61
my_bill:-111 my_warranty:62 n:38 need_$:-51 need_a:35 no_$:-28 no__is:-77 no_but:28 no_thanks:36 no_what:-69 nomas:66
not:-101 not_at:-44 now:-85 now_$:-81 number:73 number_$:49 o:79 o_menos:42 obliged:-43 obliged_$:-37 obra:34
obra_$:27 ocupan:-45 ocupan_$:-45 of_my:-42 off:-58 off_$:-54 oh:-27 oil:28 oil_change:60 ok:-42 on_$:41 on_the:-26
on_what:30 one:33 one__much:28 or:137 or_$:32 or_do:25 otro__mas:-34 out:47 out__door:37 out_the:36 pads:25 pague:-30
paid:-110 paid_$:-65 para:89 pay_$:42 perdida:-36 perdida_total:-36 pero:47 pick:30 pick__up:28 place:49 please:42
please_$:62 por:241 precio:253 precio_$:71 precio_de:34 precio_y:42 presupuesto:25 price:223 price_$:93 price_on:28
prices:-50 pricey:-56 primero:28 pueda:-55 pueda_$:-54 que:-136 que__caro:73 que_es:-42 que_la:30 que_precio:52
que_tan:36 que_tanto:44 queda:-70 queda_$:-61 quien:-34 quiero_saber:31 quote:79 quote_$:-62 rate:33 rato:-91
rato_me:-49 really:76 really_free:72 refund:-76 refund_$:-57 remind:29 remind_me:29 revision:42 right:-25
right_now:-42 rough:32 run:279 run_$:173 run_me:73 saber:46 said:29 said_$:34 sale:-95 sale_humo:-27 sale_mas:33
sale_y:28 salir:-51 salir_$:-38 same:29 saturday:27 say:69 says:-26 se:-234 se_lleva:-25 se_pueda:-54 se_queda:-27
se_tardan:-26 send__a:26 send_me:31 ser:51 ser_$:32 seria:112 seria_$:39 set:105 set__back:62 set_me:62 set_of:52
shop:-48 si:81 sintetico:31 so:-54 so_i:26 so_much:-61 still:82 still_$:51 stop:-26 sure:41 sure__it:44 take:-61
tan:36 tan__es:37 tan_caro:69 tanto:41 tarda:-43 tarda_$:-30 tardan:-40 tardan_$:-38 tax:85 tax_$:89 tell:121
tell__the:31 tell_me:80 tempranito:25 tengo:-28 th_$:-31 than:-34 than_the:-31 thank__so:-32 that:45 that_$:-96
that__be:-37 that__me:26 that__to:70 that_be:40 that_going:55 that_is:-51 that_would:-35 the:98 the__and:53
the__before:27 the__was:-34 the_address:-26 the_bill:41 the_cost:42 the_door:34 the_invoice:-27 the_price:33
the_quote:-81 the_th:-25 the_tires:-32 the_total:33 them:-70 them_$:-71 there:28 there_$:-38 there__charge:31
there__fee:46 there_a:87 these:64 these_days:89 thing:-53 this_$:-26 this_one:31 though:42 though_$:25 tiempo:-71
tiene:43 tienen_$:-28 tight:-34 time:-108 time__it:-32 time__you:-62 time_do:-67 to:47 to_$:31 to__at:41 to__for:-47
to__me:45 to__out:27 to_it:-45 to_look:61 to_set:34 toma:-52 toma_$:-36 too:-165 too__for:-58 too_much:-77 took:-29
total:99 trabajo:-29 trae:28 tread:-27 twice:-40 twice_$:-36 ultima:-33 un:44 un_estimado:94 una:48 under:87
under_my:54 unless:30 unless__is:27 unless_it:27 up:35 up_$:34 va:52 va__salir:27 va__ser:34 va_a:63 vale:96
vale_$:40 van__cobrar:26 vemos:25 verdad:25 very:-33 vida:-25 wait:37 wanted:25 warranty:62 warranty_$:41 was:-58
was_it:35 what:171 what_$:-68 what__an:55 what__i:101 what__is:-65 what__it:-32 what__my:27 what__that:59
what__the:88 what__you:136 what_a:-33 what_am:51 what_are:90 what_do:150 what_for:-58 what_i:-33 what_it:27
what_time:-40 what_will:45 what_would:182 when:-121 when__get:-66 when_i:-70 which:-60 who:-28 why:-104 why_$:-41
wife:26 wifi:-66 wifi_$:-48 will:80 will__be:55 will_it:68 wise:28 wise_$:30 with:52 with_a:27 with_tax:78 would:68
would_be:-39 would_that:71 would_the:36 would_you:-37 wrong:-38 wrong_with:-26 y:323 y__a:26 y__estan:55 y__por:61
y_a:39 y_como:-61 y_cuanto:75 y_de:53 y_donde:47 y_en:33 y_tiempo:54 yes_$:-40 yes__it:53 yes__the:-32 you:-74
you_$:-36 you__for:156 you__have:48 you__it:28 you__me:-32 you__much:-45 you__my:-39 you__or:30 you__the:-28
you_are:-26 you_be:-58 you_charge:88 you_charged:-35 you_charging:100 you_get:65 you_need:-58 you_say:32 you_so:-32
you_take:-44 you_want:25
"""
