"""What speaks for and against `price`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "price"
BIAS = -205
WEIGHTS = """\
#abaj:-61 #aber:52 #abin:-32 #abor:148 #abou:-55 #abra:-57 #acei:32 #acer:-34 #acio:51 #addr:-25 #affo:-34 #afte:74
#agno:44 #ague:-34 #ahor:46 #akes:50 #alan:40 #alat:34 #alca:44 #aldr:25 #ales:76 #algu:48 #alig:44 #alir:-54
#alki:62 #alla:-31 #allp:175 #ally:91 #alon:28 #alta:-28 #amos:25 #ance:62 #anda:69 #ando:-31 #ange:56 #angi:-70
#anit:28 #anta:35 #anto:132 #anty:65 #anyt:48 #anza:48 #aper:33 #appe:-25 #appr:-82 #arat:47 #arch:43 #arda:-159
#arge:60 #argi:104 #argo:36 #aron:-174 #arra:67 #arro:-32 #asta:-38 #asto:-44 #atan:-54 #atas:34 #atch:41 #ated:-75
#atis:157 #atll:42 #atro:32 #avor:-29 #bajo:-36 #bala:78 #ball:171 #band:25 #bank:-83 #bara:37 #befo:81 #bien:-51
#bill:-123 #blan:-36 #blig:-55 #both:28 #bout:-56 #brak:60 #bran:116 #brar:-105 #brea:-28 #brok:-57 #buck:-46
#cabi:-32 #cali:25 #canc:38 #canz:38 #carg:29 #caro:-31 #cash:-47 #ceit:32 #cela:38 #chan:-43 #char:165 #chea:36
#chec:56 #cial:260 #ciat:-86 #cier:-31 #cion:75 #cket:28 #ckup:31 #clud:38 #cobr:85 #como:83 #comp:44 #cosa:-31
#cost:523 #coti:99 #coun:62 #coup:63 #cove:77 #crib:-27 #ctur:-40 #cuan:44 #cuat:32 #cuen:93 #cuer:26 #cues:29
#cupa:-38 #curi:87 #dari:-30 #days:114 #ddre:-25 #deal:-61 #debe:-25 #deep:49 #deja:28 #deje:-37 #dejo:-30 #deme:34
#demo:-78 #depe:54 #desc:116 #desp:-25 #deti:-30 #diag:44 #dias:-63 #dice:29 #dida:-39 #diga:125 #dila:-68 #dime:49
#dine:-97 #disc:79 #doin:-89 #doll:55 #dond:31 #door:33 #down:-35 #dred:85 #dres:-34 #dria:40 #driv:-46 #dura:-139
#eall:83 #eals:53 #eape:38 #ebaj:33 #eces:-29 #ecia:190 #ecib:-29 #ecio:275 #efor:81 #efun:-85 #eite:33 #ejan:27
#ejor:-34 #elar:41 #emin:32 #emor:-74 #empo:-83 #enar:-31 #ends:79 #enen:-47 #engo:-36 #enio:48 #enos:65 #enta:-43
#ente:-25 #ento:94 #entr:-59 #epen:53 #eran:43 #erar:-27 #eras:36 #erda:31 #erdi:-49 #ered:56 #eria:77 #erio:-30
#eron:-79 #eros:29 #escu:111 #esda:-36 #espe:43 #esti:229 #esup:28 #eter:33 #etic:55 #etie:-32 #even:-38 #evis:66
#fact:-35 #falt:-27 #favo:-29 #feri:-39 #ffor:-31 #figu:53 #filt:-28 #fina:33 #flui:-51 #ford:-34 #fore:79 #foun:-31
#four:28 #free:234 #fren:-43 #from:-91 #fron:36 #fter:74 #fund:-89 #game:107 #gast:-75 #gent:-34 #ghly:28 #gimm:28
#ging:38 #give:53 #gnme:44 #gnos:44 #goin:126 #gran:-40 #grat:156 #gure:53 #hago:41 #happ:-35 #harg:165 #hatl:42
#heap:36 #heck:49 #hese:74 #hich:-68 #hici:-31 #high:-92 #hora:71 #hose:-31 #houg:39 #hous:48 #humo:-33 #hund:85
#hurt:25 #husb:29 #iagn:44 #iate:-86 #ible:-27 #ices:-46 #icey:-61 #icio:37 #idad:28 #idea:51 #iden:27 #iemp:-69
#iero:-47 #igam:102 #iged:-47 #ight:-76 #ignm:44 #igur:53 #ilat:-68 #ilte:-37 #imad:155 #imat:96 #imer:28 #imme:28
#inal:29 #incl:45 #iner:-97 #inte:43 #invo:-84 #iosi:52 #ires:28 #isco:84 #isio:40 #izac:60 #just:82 #kept:-65
#kind:26 #king:80 #labo:148 #lace:47 #lado:25 #lars:47 #lata:-31 #lcan:44 #ldri:25 #left:-93 #less:29 #levo:27
#lgun:47 #life:-55 #lige:-48 #lign:44 #line:31 #lkin:62 #llan:28 #llar:55 #lled:29 #llpa:175 #look:62 #lpar:175
#lter:-37 #ltim:-36 #luid:-47 #mado:137 #make:-28 #mano:36 #many:56 #mate:89 #mber:88 #mbio:38 #medi:-29 #mejo:-34
#meno:66 #ment:25 #meri:40 #mero:45 #mini:25 #mone:-103 #mora:-74 #mpre:30 #much:263 #must:-47 #ncel:32 #nclu:49
#nder:84 #ndre:85 #need:-37 #nero:-84 #nger:-76 #ngin:-83 #nior:48 #nles:35 #nmen:44 #noma:77 #nted:36 #ntet:35
#ntos:-65 #ntro:-26 #numb:91 #nume:61 #nvoi:-69 #nyth:49 #obli:-55 #obra:121 #oice:-71 #oing:37 #okin:47 #olla:55
#omas:99 #omes:26 #ompr:28 #oney:-103 #onge:-59 #ooki:45 #open:-31 #osit:30 #osti:30 #osto:140 #otal:109 #otiz:99
#ough:78 #ould:93 #ound:-39 #ount:64 #oupo:68 #ousa:28 #over:75 #oxim:28 #pads:27 #pago:-34 #pagu:-33 #paid:-125
#para:118 #park:163 #pasa:25 #pase:34 #pass:-37 #peci:267 #pend:42 #pera:-31 #perd:-60 #pick:50 #pide:28 #plac:42
#pock:32 #podr:30 #pong:33 #pons:80 #ppen:-25 #ppre:-80 #prec:190 #pres:59 #pric:153 #prim:31 #prox:27 #pued:-65
#quea:29 #qued:-75 #quic:-28 #quie:-40 #quot:58 #raba:-49 #rake:61 #rand:-55 #rani:26 #rant:61 #raro:-124 #rate:32
#rati:156 #rato:-66 #rdan:-33 #rdar:-67 #rdid:-43 #read:-38 #reak:-28 #real:87 #reci:151 #reco:-33 #refu:-89 #remi:32
#rena:-25 #rent:-27 #repo:-26 #ress:-38 #resu:26 #revi:65 #rged:-100 #rgen:-34 #rgin:104 #rice:125 #rime:28 #rios:49
#rito:47 #rive:-42 #robo:-36 #roke:-57 #rong:-41 #ront:33 #roug:42 #roxi:28 #rque:-27 #rran:51 #ruts:25 #sabe:45
#said:34 #sald:25 #sale:-65 #sali:-40 #same:31 #sand:26 #satu:27 #says:-40 #sban:29 #scou:81 #scue:112 #seni:48
#seri:100 #shop:-55 #sibl:-26 #sint:35 #sion:47 #sity:31 #spec:277 #sper:-96 #stad:-36 #stan:39 #star:41 #stee:34
#stil:89 #stim:231 #stop:-32 #stoy:-30 #sube:25 #supp:-36 #supu:28 #sure:31 #tado:-47 #take:-59 #talk:57 #tant:42
#tard:-159 #tari:34 #tart:34 #tell:145 #tene:-25 #teng:-42 #tera:40 #teti:35 #than:-51 #that:26 #them:-77 #thes:74
#this:-29 #thos:-25 #thou:52 #tico:31 #tiem:-86 #tigh:-28 #till:90 #tima:197 #time:-104 #tiza:98 #toma:-88 #took:-29
#tota:109 #trab:-55 #trae:34 #tran:-28 #trea:-35 #truc:25 #tura:-42 #turd:27 #twic:-43 #uand:-65 #uant:102 #uatr:32
#ucks:-45 #ueal:28 #ueda:-130 #uelv:-25 #uent:91 #uest:69 #ughl:28 #ught:-26 #uick:-28 #uien:-29 #ulti:-37 #umbe:91
#umer:61 #unde:94 #undr:81 #unle:35 #unte:-29 #unts:28 #uote:58 #upan:-53 #upon:55 #upue:28 #uran:-82 #urda:27
#urge:-35 #urio:89 #usba:29 #vale:105 #vemo:28 #vera:39 #vere:57 #very:-41 #vete:36 #vici:27 #vida:-33 #visi:33
#voic:-70 #vuel:-27 #wait:41 #want:71 #warr:65 #what:235 #when:-132 #whic:-68 #wice:-43 #wife:30 #wifi:-71 #will:86
#wise:41 #with:31 #word:-27 #woul:75 #wron:-41 #ythi:53 #zaci:60 #zero:41 %again_later:-27 %again_later%agree:-36
%again_later%bring:45 %again_later%busy:-28 %again_later%call_off:41 %again_later%doubt:40 %again_later%how_long:65
%again_later%lift:-41 %again_later%money:-90 %again_later%on_way:-25 %again_later%pay_day:48 %again_later%place:26
%again_later%question:30 %again_later%refuse:55 %again_later%season:37 %again_later%start_again:31
%again_later%wrong_one:34 %agree%away:-40 %agree%bad:31 %agree%doubt:53 %agree%elsewhere:-28 %agree%gone_car:36
%agree%how_long:27 %agree%leave_me:26 %agree%machine:27 %agree%money:99 %agree%phone:-34 %agree%place:-64
%agree%question:169 %agree%smoke_smell:-57 %away%bad:-46 %away%bring:-32 %away%car_part:32 %away%do_it:-28
%away%question:47 %away%refuse:44 %away%start_again:26 %bad:-117 %bad%do_it:-36 %bad%meaning:39 %bad%money:-79
%bad%question:-49 %bad%refuse:-29 %bring:40 %bring%call_off:39 %bring%car_part:37 %bring%do_it:55 %bring%money:69
%bring%pay_day:39 %bring%question:91 %bring%start_again:58 %busy%car_part:36 %busy%question:36 %call_off:-71
%call_off%doubt:34 %call_off%gone_car:-27 %call_off%leave_me:-30 %call_off%money:66 %call_off%question:67
%call_off%thanks:43 %car%car_part:42 %car%how_long:-32 %car%on_way:-36 %car%pay_day:33 %car%shift_it:29
%car%wrong_one:30 %car_part%do_it:115 %car_part%doubt:32 %car_part%gone_car:29 %car_part%money:140
%car_part%opening:30 %car_part%phone:36 %car_part%question:116 %car_part%refuse:41 %car_part%shift_it:54
%car_part%smoke_smell:-25 %do_it:-71 %do_it%elsewhere:-25 %do_it%on_way:38 %do_it%opening:36 %do_it%question:101
%do_it%season:-27 %do_it%shift_it:93 %do_it%staff:-32 %do_it%wrong_one:-29 %doubt:51 %doubt%elsewhere:26
%doubt%pay_day:25 %doubt%question:50 %doubt%shift_it:27 %elsewhere%money:-47 %elsewhere%place:30
%elsewhere%question:34 %elsewhere%refuse:41 %elsewhere%staff:-25 %fails:-45 %fails%how_long:-60 %fails%money:-44
%fails%question:48 %family%question:60 %family%refuse:53 %family%wrong_one:40 %gone_car:-31 %gone_car%lift:-25
%gone_car%money:43 %gone_car%pay_day:53 %gone_car%question:40 %gone_car%refuse:30 %gone_car%shift_it:38
%how_long:-154 %how_long%money:-109 %how_long%on_way:-35 %how_long%question:-209 %how_long%shift_it:-32
%how_long%wrong_one:33 %leave_me:-116 %leave_me%money:-33 %lift:-69 %lift%money:-50 %lift%question:-54
%lift%refuse:33 %machine%money:27 %meaning:-131 %meaning%money:78 %meaning%question:-89 %message:-38 %money:608
%money%on_way:90 %money%opening:30 %money%pay_day:-54 %money%phone:72 %money%question:324 %money%shift_it:45
%money%smoke_smell:-44 %money%staff:-28 %money%wrong_one:80 %noise%question:38 %odometer:-44 %on_way%question:-42
%opening:-29 %opening%shift_it:25 %pay_day%question:79 %pay_day%refuse:25 %pay_day%shift_it:27 %pay_day%wrong_one:40
%place:-51 %place%question:-126 %place%shift_it:30 %question:73 %question%refuse:96 %question%shift_it:119
%question%staff:-26 %question%start_again:114 %question%thanks:67 %question%who:-78 %refuse%shift_it:30
%refuse%thanks:31 %refuse%wrong_one:-51 %shift_it%thanks:-27 %smoke_smell:-96 %staff:-87 %staff%wrong_one:-43
%start_again:78 %thanks:-165 %who:-104 @?:247 @after_visit:-170 @car:32 @confirm:-25 @confirm_stop:-43 @day:-36
@nothing:53 @odometer:-56 @offers:-42 @reading:37 @times:-50 ^_a:116 ^_am:26 ^_any:116 ^_ballpark:133 ^_bank:-52
^_before:35 ^_call:29 ^_can:45 ^_cobran:41 ^_como:-79 ^_con:60 ^_cost:42 ^_cuando:-33 ^_cuanto:-241 ^_cuantos:-59
^_depends:70 ^_did:38 ^_do:54 ^_does:85 ^_el:-65 ^_en:-45 ^_es:-26 ^_eso:28 ^_esta:-62 ^_for:-27 ^_free:-50
^_gimme:28 ^_give:36 ^_going:-34 ^_got:93 ^_hay:87 ^_how:-214 ^_i:-148 ^_is:218 ^_it:-39 ^_later:29 ^_le:-47 ^_mas:43
^_maybe:26 ^_much:-105 ^_muy:-26 ^_need:38 ^_not:-61 ^_oh:-32 ^_para:27 ^_precio:66 ^_price:43 ^_que:37 ^_quote:67
^_sale:-235 ^_salir:-67 ^_si:-45 ^_sure:53 ^_thank:-33 ^_thanks:-26 ^_that:-76 ^_the:-90 ^_tienen:33 ^_too:-84
^_trae:25 ^_what:-178 ^_when:-67 ^_which:-54 ^_why:-118 ^_y:-67 ^_ya:27 ^_you:-104 a:131 a__el:66 a__es:33
a__filter:-33 a__first:36 a__for:110 a__la:38 a__lo:50 a__of:29 a__off:-31 a__on:37 a__sale:35 a__thing:-25 a_big:-27
a_bot:-27 a_brake:26 a_cabin:-34 a_charge:35 a_cobrar:25 a_como:361 a_fee:55 a_hundred:50 a_la:-34 a_las:-160
a_number:94 a_price:54 a_salir:29 a_ser:48 a_set:55 a_tener:-25 a_ver:30 about:-62 abran:-51 aceite:28 address:-25
address_$:-29 afford:-34 afford_it:-33 after:60 ahi:-81 ahi_$:-68 ahora:31 alcanza:46 algo_por:33 algun:47
alignment:52 all:70 all_$:29 all__what:25 all_day:-34 alla:-29 am:79 am__going:31 am_i:82 an:149 an__change:54
an_estimate:46 an_oil:54 and:206 and__i:36 and__is:50 and__long:29 and__much:85 and_do:40 and_how:131 and_what:84
and_you:-35 anda:75 anda_$:30 any:275 any__for:54 anything:49 anything_$:34 anyway:28 anyway_$:39 appreciated:-63
are:48 are__charging:105 are__talking:40 are_they:-30 are_we:49 are_you:43 at:51 at_it:37 back_$:28 bad:29 balatas:34
ballpark:175 ballpark_$:123 bank:-83 bank__it:-40 barato:38 be:52 be_$:138 be__to:-33 be_a:-33 be_doing:-72 before:72
before__say:36 before_i:92 bien:-45 big:-43 big_deal:-34 bill:-129 bill_$:30 bill_was:-52 bot:-27 bot_$:-27 both:29
brake_fluid:-26 brakes:48 break:-28 break_down:-25 bring_the:31 broke:-46 bucks:-45 but:-36 but__much:29 but_how:27
but_the:-32 by:-43 cabin:-37 cabin_filter:-33 call__with:32 cambio:27 can:77 can__get:71 can__my:28 can_you:35
cancelar:41 cancelar_$:27 cant_afford:-28 car:-44 cargo:36 carro:-29 carro_$:-30 cash:-47 change:59 changing:-65
charge:157 charge_$:28 charge_for:48 charge_to:44 charged:-86 charged__for:-32 charged_me:-50 charging:105 cheaper:38
cobran:181 cobran__por:39 cobran_algo:39 cobran_por:74 cobraron:-123 cobraron__mas:-43 cobraron_de:-43 come_$:-40
come__with:32 come_to:52 como:83 como_$:69 como__me:-27 como__se:-40 como_a:-27 como_cuanto:-172 como_el:49
como_es:25 como_la:31 como_lo:33 como_sale:35 con:78 con_la:37 cosa:-30 cost:353 cost_$:146 cost_and:53 costo:141
costo_$:39 costo_y:51 cotizacion:60 could_you:33 coupons:80 covered:57 cuando:-65 cuanto:148 cuanto_$:55 cuanto__a:44
cuanto__el:60 cuanto__es:-42 cuanto__las:29 cuanto__lleva:-27 cuanto__me:-160 cuanto__para:29 cuanto__por:49
cuanto__que:43 cuanto__queda:-75 cuanto__tarda:-26 cuanto__tardan:-61 cuanto__tengo:-31 cuanto__y:141 cuanto_anda:55
cuanto_cobran:28 cuanto_cuesta:59 cuanto_demora:-64 cuanto_dura:-64 cuanto_era:44 cuanto_es:172 cuanto_mas:-91
cuanto_me:31 cuanto_por:120 cuanto_rato:-104 cuanto_sale:69 cuanto_se:-236 cuanto_seria:119 cuanto_tengo:32
cuanto_tiempo:-146 cuanto_toma:-45 cuanto_va:40 cuanto_vale:75 cuantos:-65 cuantos_dias:-61 cuatro:32 cuesta:29
cuesta__cuanto:27 cuesta_y:31 curious:32 da:112 dad:26 damage:32 dan:37 dar:34 day:-39 days:91 days_$:100 de:148
de_$:31 de__a:-27 de__como:42 de__de:29 de__es:25 de_a:34 de_aceite:38 de_cuanto:31 de_la:-28 de_las:25 de_mas:-44
de_obra:39 de_que:-30 de_veras:27 de_verdad:26 de_vida:-28 deal:-88 deal_$:-30 deal_with:-30 deep:49 deja:26 dejan:25
dejo:-30 demora:-67 demora_$:-55 depends:69 descuento:104 dia:-43 dia_$:-34 dias:-63 dice:34 did:-48 did__say:43
did_it:-34 did_my:-62 digame:102 digame__precio:29 digame_cuanto:46 digame_el:35 dilatan:-54 dime:49 dime_el:42
dinero:-98 dinero_$:-54 discount:52 do:80 do_$:-88 do__charge:73 do__get:71 do__go:32 do__guys:50 do__need:-50
do__owe:38 do__pay:45 do__take:-50 do__use:-31 do_i:70 do_you:67 does__cost:56 doing:-89 doing_$:-39 doing__it:-43
doing_to:-43 dollars:47 dollars_$:46 donde:31 donde_estan:73 door:35 down:-39 down_on:-26 drive:-36 due:-45
due_for:-33 dura:-59 el:138 el__a:-48 el__de:64 el__para:49 el_cambio:33 el_costo:85 el_dinero:-46 el_lunes:-38
el_otro:43 el_precio:93 el_total:50 el_trabajo:-26 en:56 en__anda:49 en__me:70 en__sale:27 en__se:-61 en_cuanto:73
era:48 era_$:32 es:124 es_$:25 es__de:25 es_de:-30 es_eso:-32 es_gratis:153 es_la:27 es_que:-28 es_un:-45 es_y:63
eso_$:-31 eso_es:29 especial:39 esperar:-26 espero:-62 espero_$:-59 esta:-65 esta__caro:-39 estan:45 estar:-30
estimado:136 estimado_$:83 estimate:97 estimate_$:55 estoy:-30 even:-26 ever:31 factura:-35 favor_$:29 fee:100
feria:-38 feria_$:-36 figure:53 filter:-42 filter_$:-30 final:30 fluid:-50 for:102 for_$:-129 for__days:40 for_a:46
for_all:35 for_me:-55 for_that:53 for_the:56 for_these:40 for_this:31 for_what:-56 found:-31 four:29 free:245
free_$:232 free_or:43 frenar:-27 frenar_$:-27 friday_$:-27 from:-91 from_the:-62 fue:-39 gasto:-41 get:60 get__a:38
get_a:73 get_for:112 get_paid:-60 gimme:28 give:57 give_me:50 go_for:100 going:126 going_on:38 going_to:80 got_any:72
got_to:38 grand:-38 grand_$:-38 gratis:157 gratis_$:124 guys_have:51 hablan:-29 hace:50 hago:41 hago_$:44 hay:119
hicieron:-30 high:-32 high_$:-29 hora:40 hora_de:30 how:284 how__and:70 how__do:43 how__for:29 how__how:28 how__i:-57
how__is:68 how__it:-35 how__longer:-58 how__of:-27 how__time:-92 how__to:45 how__was:48 how__we:27 how__you:-31
how_come:-95 how_do:-72 how_is:-35 how_long:32 how_many:57 how_much:460 hoy:-27 humo:-30 hundred:55 hurt:25
husband:29 i__a:44 i__an:25 i__anything:44 i__for:31 i__it:-45 i__paid:-64 i__the:30 i__there:-29 i__to:45 i_bring:28
i_can:45 i_going:31 i_have:-28 i_owe:61 i_paid:-36 i_pay:35 i_say:37 i_was:-54 i_would:-26 idea:52 if:37 if_i:30
im:-39 im_not:-35 in__what:40 in_the:-41 invoice:-69 invoice_$:-40 ir:25 is:-53 is__address:-42 is__cost:41
is__do:-49 is__for:-81 is__free:157 is__going:49 is__is:28 is__labor:79 is__oil:45 is__on:-39 is__price:48
is__really:66 is__run:162 is__still:83 is__than:-55 is__total:38 is__wifi:-49 is__with:-28 is_a:-50 is_an:61
is_it:114 is_on:-27 is_still:-25 is_that:87 is_the:101 is_there:90 is_this:-67 is_wrong:-36 it:115 it_$:-60 it__be:34
it__free:74 it__like:36 it__the:-26 it__to:-30 it__under:123 it_a:-78 it_anyway:50 it_be:78 it_cost:79 it_do:-55
it_for:-87 it_is:-42 it_really:54 it_run:70 it_still:79 job:56 just:86 just__what:27 just_curious:32 kept:-65
la__de:45 la__y:32 la_cara:-34 la_factura:-33 la_hago:45 la_hora:35 la_otra:29 la_revision:46 la_ultima:-34 labor:148
labor_$:107 lado:25 las_$:-84 las_dos:30 late:-32 le:-128 le__a:-28 le_cuesta:-26 le_sale:-38 left:-93 left_on:-57
les:-70 life:-55 like_the:28 lleva:-28 llevo:27 lo:-114 lo__que:35 lo_ocupan:-53 lo_que:-51 lo_tienen:-25 long:50
long_$:82 long__how:25 long__it:-27 longer:-60 longer_$:-35 look__it:39 look_at:36 looking:58 looking_at:49 los:26
mano:37 mano__obra:39 mano_de:39 many:56 mas:-45 mas_$:-57 mas__menos:46 mas_barato:40 mas_de:45 mas_o:46 me:41
me_$:40 me__a:35 me__cuanto:45 me__dar:38 me__de:-44 me__muy:34 me__price:46 me__que:-55 me__the:28 me__un:66
me__una:29 me__what:30 me_a:-39 me_back:73 me_cobran:43 me_cobraron:-111 me_da:123 me_dice:36 me_espero:-59
me_for:-46 me_hace:27 me_lo:-75 me_now:-35 me_puede:41 me_sale:62 me_the:73 me_van:32 me_with:77 mean:-35 mejor:-34
menos:66 mes:27 mi:-31 money:-98 money_$:-68 money_wise:28 much:248 much_$:56 much__how:53 much__i:37 much__is:-69
much__it:149 much__look:31 much__my:-32 much__the:49 much_and:51 much_for:70 much_is:130 much_longer:-58
much_obliged:-47 much_of:-30 much_time:-92 much_to:55 much_would:44 must:-47 muy:-45 muy_caro:-50 my:-71 my__go:-60
my__is:-74 my_bill:-125 my_dad:26 my_invoice:-27 my_warranty:68 n:56 need_$:-56 need_a:37 new:27 no:41 no_$:-36
no__is:-84 no_but:39 no_thanks:42 no_what:-74 nomas:77 not:-110 not__to:-25 not_at:-49 now:-90 now_$:-86 number:80
number_$:55 number__the:25 o:92 o_menos:46 obliged:-47 obliged_$:-42 obra:39 obra_$:31 ocupan:-53 ocupan_$:-53 of:30
of_my:-56 off:-64 off_$:-60 oh:-34 oil:32 oil_change:68 ok:-52 on_$:43 on__tires:-28 on_a:27 on_the:-31 on_what:32
one:33 one__much:33 or:176 or_$:34 or__i:26 or_do:28 otro__mas:-38 out:71 out__door:41 out_of:50 out_the:43 pads:27
pague:-34 paid:-118 paid_$:-67 para:103 para_una:29 pay_$:48 perdida:-42 perdida_total:-42 pero:46 pick:33
pick__up:32 place:52 please:37 please_$:62 pocket:32 por:278 por__y:-28 precio:286 precio_$:79 precio_de:44
precio_y:47 presupuesto:28 price:235 price_$:102 price_and:26 price_on:31 prices:-43 pricey:-61 primero:33 pueda:-62
pueda_$:-62 puede:26 puede__el:26 pues_$:-29 que:-157 que__caro:81 que__eso:-28 que__otro:-27 que_es:-53 que_la:35
que_le:-26 que_me:-25 que_precio:56 que_tan:39 que_tanto:53 queda:-82 queda_$:-71 quick:-25 quien:-39 quiero_saber:34
quote:81 quote_$:-72 rate:37 rato:-112 rato_me:-63 really:83 really_free:76 refund:-85 refund_$:-64 remind:38
remind_me:38 revision:46 right_now:-43 ring:-25 rough:36 roughly:28 run:308 run_$:188 run_me:83 saber:52 said:34
said_$:39 sale:-82 sale__barato:26 sale_humo:-30 sale_mas:41 sale_y:34 salir:-54 salir_$:-41 same:33 sat:28
saturday:29 say:78 say_anything:37 says:-40 se:-264 se_lleva:-28 se_pueda:-62 se_queda:-32 se_tarda:-27 se_tardan:-33
send__a:28 send_me:33 ser:55 ser_$:36 seria:127 seria_$:46 serious:-26 servicio:27 set:113 set__back:70 set_me:69
set_of:55 shop:-54 si:93 sintetico:35 so:-42 so_i:29 so_much:-65 still:90 still_$:60 still__the:25 stop:-29 struts:25
sube:25 sure:46 sure__it:49 take:-67 talking:37 tan:39 tan__es:40 tan__estan:-25 tan_caro:77 tanto:50 tarda:-48
tarda_$:-33 tardan:-45 tardan_$:-46 tax:100 tax_$:104 tell:142 tell__the:39 tell_me:98 tempranito:28 tener:-25
tengo:-32 th_$:-35 th_and:26 than:-37 than_the:-35 thank__so:-36 that:26 that_$:-109 that__be:-41 that__me:34
that__to:82 that_be:37 that_going:66 that_is:-53 that_would:-40 the:92 the__and:62 the__before:31 the__is:-26
the__was:-38 the__with:-28 the_address:-31 the_bank:-31 the_bill:54 the_cost:50 the_damage:28 the_door:37
the_invoice:-28 the_price:33 the_quote:-91 the_th:-32 the_tires:-34 the_total:43 them:-77 them_$:-81 there_$:-44
there__charge:37 there__fee:55 there_a:96 these:74 these_days:102 thing:-55 this:-29 this_$:-28 this_one:34 those:-25
though:47 though_$:27 tiempo:-85 tiempo_lo:-26 tiene:50 tienen_$:-39 tight:-28 time:-120 time__it:-35 time__you:-68
time_do:-73 tires:30 tires_$:-25 to:45 to_$:34 to__at:48 to__for:-46 to__me:50 to__out:30 to_it:-52 to_look:70
to_set:34 to_wait:25 todo:29 toma:-60 toma_$:-41 too:-171 too__for:-63 too_much:-79 took:-29 total:115 trabajo:-32
trae:34 tread:-32 twice:-43 twice_$:-36 ultima:-35 ultima_vez:-25 un:44 un_estimado:99 una:62 under:101 under_$:46
under_my:61 unless:35 unless__is:32 unless_it:32 up:36 up_$:38 up__is:25 va:53 va__salir:33 va__ser:37 va_a:73
vale:109 vale_$:45 van__cobrar:29 van__tener:-26 vemos:28 veras:27 verdad:26 verdad_$:25 very:-42 very_much:-42
vida:-29 wait:48 want:25 wanted:30 warranty:65 warranty_$:43 was:-77 was_it:41 we:40 we_talking:47 what:172
what_$:-82 what__an:62 what__i:111 what__is:-77 what__my:53 what__that:50 what__the:87 what__was:-28 what__you:143
what_a:-39 what_am:53 what_are:104 what_do:178 what_does:-26 what_for:-68 what_i:-49 what_it:33 what_time:-44
what_will:49 what_would:196 when:-129 when__get:-69 when_i:-72 which:-67 who:-30 why:-117 why_$:-43 wife:30 wifi:-71
wifi_$:-52 will:86 will__be:61 will_it:76 wise:42 wise_$:47 with:46 with_a:32 with_tax:87 would:72 would_be:-46
would_it:25 would_that:77 would_the:42 would_you:-43 wrong:-41 wrong_with:-29 y:355 y__a:30 y__estan:63 y__por:68
y_a:44 y_como:-71 y_cuanto:90 y_de:59 y_donde:52 y_en:37 y_tiempo:61 ya_con:25 yes_$:-45 yes__it:59 yes__the:-35
yes_but:-28 you:-83 you_$:-44 you__bot:-25 you__for:181 you__have:51 you__it:31 you__me:-42 you__much:-49 you__my:-46
you__or:36 you__the:-29 you_a:-26 you_are:-27 you_be:-66 you_charge:94 you_charged:-41 you_charging:108 you_ever:26
you_get:78 you_guys:26 you_need:-63 you_say:37 you_so:-36 you_take:-51 you_use:-25 you_want:27
"""
