"""What speaks for and against `price`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "price"
BIAS = -176
WEIGHTS = """\
#abaj:-44 #aber:37 #abin:-21 #abor:100 #abou:-35 #abra:-30 #acei:24 #acer:-25 #acio:32 #addr:-25 #affo:-22 #afte:42
#agai:18 #agno:23 #ague:-20 #ahor:20 #akes:25 #alat:21 #alca:35 #ales:54 #algu:36 #alig:31 #alir:-33 #alki:33
#alla:-22 #allp:118 #ally:60 #ance:30 #anda:32 #ando:-18 #ange:29 #angi:-42 #anit:23 #anta:28 #ante:20 #anto:100
#anty:39 #anyt:28 #anyw:21 #anza:34 #aper:21 #appr:-48 #arat:29 #arda:-125 #arge:36 #argi:75 #argo:26 #aron:-106
#arra:32 #arro:-24 #asta:-20 #asto:-26 #atan:-28 #atas:21 #atch:24 #ated:-45 #ater:25 #atis:110 #atro:23 #bajo:-25
#bala:33 #ball:116 #band:21 #bank:-48 #bara:21 #batt:19 #been:-18 #befo:56 #bien:-41 #bill:-81 #blan:-19 #blig:-28
#both:21 #bout:-40 #brak:48 #bran:71 #brar:-65 #brok:-32 #buck:-26 #cabi:-21 #canc:31 #canz:31 #carg:23 #caro:-28
#cash:-32 #ceit:24 #cela:24 #chan:-34 #char:112 #chea:24 #chec:31 #cial:156 #cias:19 #ciat:-51 #cion:47 #cobr:48
#come:19 #como:19 #comp:31 #cosa:-21 #cost:355 #coti:54 #coun:52 #coup:44 #cove:48 #ctur:-23 #cuan:39 #cuat:24
#cuen:61 #cues:26 #cupa:-32 #curi:47 #dari:-21 #days:66 #ddre:-25 #deal:-20 #deci:20 #deje:-24 #deme:27 #demo:-54
#depe:35 #desc:69 #diag:23 #dias:-36 #dice:20 #dida:-27 #diga:80 #dila:-37 #dime:34 #dine:-63 #disc:62 #doin:-49
#doll:21 #dond:21 #down:-19 #dred:28 #dres:-33 #dria:23 #driv:-28 #dura:-78 #eall:56 #eals:26 #eape:24 #ease:19
#ebaj:24 #ecia:116 #ecio:194 #ecti:21 #efor:56 #efun:-52 #eite:24 #ejor:-24 #elar:26 #emin:18 #emor:-51 #empo:-59
#enar:-22 #ende:-19 #ends:54 #enen:-19 #engo:-20 #enos:56 #enta:-30 #ento:59 #entr:-40 #epen:34 #eran:21 #eras:22
#erdi:-34 #ered:39 #eria:48 #erio:-18 #eron:-44 #escu:67 #esda:-24 #espe:24 #esta:18 #este:-20 #esti:146 #eter:22
#etic:34 #etie:-23 #evis:37 #fact:-20 #falt:-18 #feel:-18 #feri:-22 #ffor:-19 #figu:33 #firs:25 #flui:-23 #ford:-22
#fore:56 #foun:-20 #four:24 #free:153 #fren:-30 #from:-56 #fron:19 #fter:42 #fund:-54 #gain:18 #game:73 #gast:-41
#gent:-29 #ging:32 #give:36 #gnme:31 #gnos:23 #goin:86 #gone:20 #grac:19 #gran:-20 #grat:110 #gure:33 #hank:-19
#happ:-18 #harg:110 #heap:23 #heck:26 #hese:45 #hich:-42 #high:-57 #hora:20 #houg:21 #hour:25 #hous:25 #humo:-25
#hund:28 #hurs:19 #husb:22 #iagn:23 #iate:-51 #ible:-18 #ices:-37 #icio:29 #idad:18 #idea:30 #iemp:-55 #igam:67
#iged:-24 #ight:-61 #ignm:31 #igur:33 #ilat:-37 #ilte:-26 #imad:95 #imat:71 #imer:20 #iner:-63 #inte:24 #invo:-54
#iosi:30 #irst:25 #isco:66 #isio:29 #izac:43 #just:43 #king:46 #labo:100 #lace:36 #lant:22 #lars:23 #lcan:36 #leas:18
#left:-62 #lgun:33 #life:-34 #lige:-24 #lign:31 #line:23 #lkin:33 #llan:26 #llar:21 #llpa:118 #look:52 #lpar:118
#lter:-25 #ltim:-23 #luid:-20 #mado:84 #mano:20 #many:23 #mate:67 #mber:50 #mbia:-18 #mbio:24 #medi:-20 #mejo:-24
#meno:55 #meri:31 #mero:34 #mone:-81 #mora:-51 #mpre:21 #much:227 #must:-26 #ncel:26 #nder:49 #ndre:28 #need:-22
#nero:-51 #nger:-46 #ngin:-55 #nmen:31 #noma:51 #nost:20 #nted:22 #ntos:-39 #numb:53 #nume:48 #nvoi:-46 #nyth:29
#nywa:21 #obli:-28 #obra:69 #ocup:-22 #oice:-46 #oing:36 #okin:34 #olla:21 #omas:60 #omes:20 #ompr:21 #oney:-81
#onge:-35 #ooki:40 #open:-25 #osti:24 #osto:101 #otal:83 #otiz:54 #ough:52 #ould:75 #ound:-24 #ount:50 #oupo:47
#over:28 #oxim:21 #pago:-25 #pagu:-19 #paid:-83 #para:76 #park:112 #pase:29 #pass:-23 #peci:160 #pect:23 #pend:27
#pera:-20 #perd:-41 #pick:34 #plac:29 #plea:19 #podr:19 #pong:26 #pons:56 #ppre:-47 #prec:139 #pres:34 #pric:99
#prim:25 #prox:21 #pued:-40 #qued:-45 #quie:-29 #quot:46 #raba:-38 #rake:49 #rand:-30 #rani:22 #rant:36 #raro:-73
#rate:22 #rati:109 #rato:-36 #rdan:-39 #rdar:-43 #rdid:-29 #read:-25 #real:60 #reci:119 #reco:-21 #refu:-55 #remi:18
#rena:-19 #repo:-20 #ress:-36 #revi:36 #rged:-62 #rgen:-28 #rgin:75 #rice:79 #righ:-23 #rime:20 #rios:26 #rito:36
#rive:-25 #robo:-25 #roke:-32 #rong:-30 #roug:25 #roxi:21 #rque:-22 #rran:30 #ruts:18 #sabe:33 #said:19 #sale:-50
#sali:-39 #says:-18 #sban:22 #scou:64 #scue:67 #seri:57 #shop:-36 #sion:27 #spec:175 #sper:-61 #stad:-21 #stan:33
#star:24 #sted:-19 #stee:22 #stil:53 #stim:151 #stoy:-20 #supp:-23 #sure:26 #tado:-29 #take:-53 #talk:33 #tard:-121
#tart:18 #tell:103 #teng:-27 #tery:19 #than:-49 #that:28 #them:-54 #ther:26 #thes:45 #this:-23 #thou:26 #tiem:-65
#tigh:-27 #till:46 #tima:128 #time:-69 #tion:18 #tiza:54 #toma:-58 #tomo:19 #took:-19 #tota:83 #trab:-41 #tran:-18
#trea:-19 #truc:20 #trut:18 #tura:-24 #twic:-26 #uand:-41 #uant:93 #uatr:24 #ucho:-23 #ucks:-26 #ueda:-84 #uent:59
#uest:46 #uien:-19 #ulti:-23 #umbe:53 #umer:48 #unde:57 #undr:28 #unte:-20 #unts:26 #uote:46 #upan:-31 #upon:37
#uran:-50 #urge:-28 #urio:46 #usba:22 #uste:-18 #vale:56 #vemo:19 #vera:24 #vere:39 #very:-25 #vete:21 #vici:20
#vida:-19 #visi:27 #voic:-46 #vuel:-18 #wait:29 #want:40 #warr:39 #what:145 #when:-80 #whic:-42 #wice:-26 #wifi:-46
#will:54 #with:31 #woul:65 #wron:-30 #ythi:32 #yway:21 #zaci:43 %again_later%agree:-27 %again_later%bring:26
%again_later%busy:-18 %again_later%call_off:18 %again_later%doubt:20 %again_later%how_long:52 %again_later%lift:-20
%again_later%money:-39 %again_later%pay_day:31 %again_later%refuse:26 %again_later%season:26
%again_later%start_again:23 %again_later%thanks:-19 %again_later%wrong_one:33 %agree%away:-29 %agree%call_off:25
%agree%car:-18 %agree%doubt:41 %agree%fails:-22 %agree%gone_car:22 %agree%leave_me:24 %agree%machine:20
%agree%money:83 %agree%phone:-19 %agree%place:-56 %agree%question:118 %agree%smoke_smell:-39 %agree%wrong_one:25
%away%bad:-25 %away%bring:-21 %away%question:22 %away%refuse:20 %away%start_again:21 %bad:-85 %bad%do_it:-19
%bad%money:-45 %bad%question:-38 %bring:35 %bring%call_off:29 %bring%car_part:27 %bring%do_it:30 %bring%money:47
%bring%pay_day:23 %bring%question:81 %bring%start_again:35 %busy%car_part:28 %busy%money:-19 %call_off:-56
%call_off%doubt:21 %call_off%money:63 %call_off%question:62 %call_off%thanks:26 %car%how_long:-22 %car%on_way:-19
%car%pay_day:23 %car%refuse:-18 %car%shift_it:19 %car_part:36 %car_part%do_it:67 %car_part%doubt:21
%car_part%gone_car:25 %car_part%how_long:20 %car_part%money:114 %car_part%phone:30 %car_part%question:83
%car_part%refuse:27 %car_part%shift_it:41 %car_part%smoke_smell:-19 %car_part%wrong_one:21 %do_it:-43 %do_it%doubt:23
%do_it%on_way:28 %do_it%opening:20 %do_it%question:69 %do_it%season:-19 %do_it%shift_it:63 %do_it%staff:-18 %doubt:44
%doubt%elsewhere:20 %doubt%question:34 %elsewhere%money:-28 %elsewhere%pay_day:18 %elsewhere%question:24
%elsewhere%refuse:31 %elsewhere%staff:-22 %fails:-69 %fails%how_long:-30 %fails%money:-36 %family%question:39
%family%refuse:35 %gone_car:-29 %gone_car%money:35 %gone_car%pay_day:37 %gone_car%question:33 %gone_car%refuse:18
%gone_car%shift_it:31 %how_long:-127 %how_long%lift:19 %how_long%money:-91 %how_long%on_way:-36
%how_long%question:-171 %how_long%wrong_one:23 %leave_me:-75 %leave_me%money:-27 %lift:-30 %lift%question:-39
%lift%wrong_one:19 %machine%money:19 %meaning:-114 %meaning%money:35 %meaning%question:-74 %message:-26 %money:499
%money%noise:20 %money%on_way:52 %money%opening:23 %money%pay_day:-49 %money%phone:54 %money%question:279
%money%season:20 %money%shift_it:38 %money%smoke_smell:-41 %money%staff:-19 %money%wrong_one:49 %odometer:-47
%odometer%question:-18 %on_way%question:-27 %opening:-19 %pay_day%question:41 %pay_day%shift_it:21
%pay_day%wrong_one:31 %phone%wrong_one:19 %place:-50 %place%question:-91 %place%shift_it:26 %question:72
%question%refuse:90 %question%shift_it:89 %question%start_again:69 %question%thanks:40 %question%who:-69
%refuse%shift_it:25 %refuse%thanks:19 %refuse%wrong_one:-25 %smoke_smell:-74 %staff:-57 %staff%wrong_one:-24
%start_again:39 %thanks:-112 %who:-90 @?:211 @after_visit:-108 @car:41 @confirm_stop:-27 @nothing:42 @odometer:-20
@reading:23 ^_a:75 ^_after:22 ^_am:22 ^_antes:18 ^_any:74 ^_ballpark:92 ^_bank:-36 ^_before:22 ^_call:20 ^_can:32
^_cobran:35 ^_como:-51 ^_con:22 ^_cost:32 ^_cuando:-20 ^_cuanto:-139 ^_cuantos:-30 ^_depends:44 ^_did:30 ^_do:41
^_does:47 ^_el:-51 ^_en:-30 ^_esta:-43 ^_for:-21 ^_give:19 ^_got:70 ^_hay:57 ^_how:-113 ^_i:-88 ^_is:141 ^_it:-27
^_later:22 ^_le:-29 ^_mas:30 ^_much:-60 ^_need:18 ^_no:-23 ^_not:-43 ^_oh:-19 ^_para:19 ^_precio:40 ^_price:29
^_que:25 ^_sale:-169 ^_salir:-45 ^_sure:37 ^_thank:-21 ^_thanks:-20 ^_that:-31 ^_the:-52 ^_tienen:20 ^_too:-52
^_what:-87 ^_when:-36 ^_which:-32 ^_who:-24 ^_why:-71 ^_y:-42 ^_yes:19 ^_you:-84 a:107 a__el:35 a__filter:-22
a__first:23 a__for:82 a__la:21 a__lo:29 a__on:22 a_brake:18 a_cabin:-23 a_charge:26 a_como:191 a_las:-98 a_price:35
a_salir:23 a_ser:33 a_set:39 a_ver:20 about:-34 abran:-26 aceite:20 address:-25 address_$:-20 afford:-22
afford_it:-20 after:32 again:19 ahi:-56 ahi_$:-40 alcanza:32 algun:33 alignment:38 all:59 all_$:22 all_day:-22
alla:-21 am:50 am__going:19 am_i:52 an:100 an__change:27 an_oil:26 and:143 and__are:-19 and__i:34 and__is:32
and__long:24 and__much:59 and_do:32 and_how:96 and_what:40 and_you:-23 anda:41 any:184 anything:29 anything_$:22
anyway:21 anyway_$:21 appreciated:-38 are:29 are_we:24 are_you:29 at:38 at_it:19 at_the:-20 back_$:18 balatas:21
ballpark:118 ballpark_$:84 bank:-48 barato:21 battery:19 be:30 be_$:80 be__to:-20 be_a:-21 be_doing:-44 been:-18
before:49 before_i:50 bien:-34 bill:-79 bill_was:-29 both:22 brake:21 brakes:28 broke:-25 bucks:-26 budget_$:18
but:-29 but__much:23 but_how:22 but_the:-20 by:-29 cabin:-25 cabin_filter:-23 cambio:24 cambio__aceite:19 can:59
can__get:50 can_you:24 cancelar:26 car:-27 cargo:27 caro:-21 caro_$:-18 carro:-19 carro_$:-18 cash:-32 change:33
changing:-39 charge:95 charge_$:19 charge_for:32 charged:-54 charged__for:-19 charged_me:-31 charging:75 cheaper:24
cien:18 cien_$:18 cobran:105 cobran__por:26 cobran_algo:25 cobran_por:57 cobraron:-72 cobraron__mas:-27
cobraron_de:-27 come_$:-24 come_to:31 como:18 como_$:37 como__se:-25 como_cuanto:-102 como_lo:19 con:33 cosa:-23
cost:232 cost_$:104 cost_and:32 costo:102 costo_$:28 cotizacion:43 could_you:21 covered:39 cuando:-41 cuanto:106
cuanto_$:34 cuanto__a:27 cuanto__el:39 cuanto__es:-24 cuanto__las:18 cuanto__me:-95 cuanto__para:20 cuanto__por:27
cuanto__que:31 cuanto__tardan:-37 cuanto__y:86 cuanto_anda:29 cuanto_cuesta:39 cuanto_demora:-44 cuanto_dura:-34
cuanto_era:29 cuanto_es:91 cuanto_mas:-58 cuanto_me:22 cuanto_por:79 cuanto_rato:-60 cuanto_sale:42 cuanto_se:-140
cuanto_seria:64 cuanto_tarda:-18 cuanto_tardan:-18 cuanto_tengo:22 cuanto_tiempo:-97 cuanto_va:29 cuanto_vale:52
cuantos:-38 cuantos_dias:-33 cuatro:24 cuesta:26 cuesta_y:18 da:72 damage:23 dan:30 dar:28 days:55 days_$:62 de:105
de_$:18 de__como:27 de__de:21 de_a:22 de_aceite:23 de_cuanto:22 de_la:-21 de_las:22 de_mas:-30 de_obra:23 deal:-37
deja:18 del:-20 demora:-46 demora_$:-37 depends:44 descuento:60 dia:-32 dia_$:-20 dias:-36 dice:23 did:-25 did_it:-18
did_my:-39 did_you:20 digame:67 digame__precio:18 digame_cuanto:26 digame_el:23 dime:34 dinero:-63 dinero_$:-32
discount:37 do:48 do_$:-54 do__charge:50 do__get:35 do__go:19 do__guys:35 do__need:-28 do__owe:24 do__take:-39
do__use:-19 do_i:53 do_you:44 does__cost:33 doing:-49 doing_$:-23 doing__it:-24 doing_to:-24 dollars:24 dollars_$:18
donde:21 donde_estan:51 down:-22 drive:-20 due:-26 due_for:-19 dura:-29 el:85 el__a:-26 el__cuanto:19 el__de:43
el__para:33 el_cambio:28 el_costo:54 el_dinero:-26 el_lunes:-26 el_otro:18 el_precio:67 el_sabado:-18 el_total:38
en:33 en__anda:29 en__me:45 en__se:-33 en_cuanto:45 en_el:-28 era:34 era_$:22 es:71 es__de:26 es_de:-19 es_gratis:107
es_lo:19 es_un:-26 es_y:39 espero:-39 espero_$:-37 esta:-39 esta__caro:-28 estan:36 estar:-20 estimado:80 estimate:71
estimate_$:37 estoy:-20 ever:23 factura:-20 fee:64 feria:-21 figure:33 filter:-29 filter_$:-22 first:25 first_$:23
fluid:-22 for:70 for_$:-67 for_a:33 for_free:-23 for_me:-33 for_that:27 for_the:53 for_these:31 for_this:24
for_what:-36 found:-20 four:24 free:161 free_$:141 frenar:-18 frenar_$:-18 from:-56 from_the:-37 front:19 fue:-22
get:26 get__a:31 get_a:48 get_for:54 get_paid:-42 give:36 give_me:29 go_for:55 going:86 going_on:26 going_to:60
gone:20 got_any:47 gracias:20 gratis:110 gratis_$:80 hace:34 hay:79 high:-21 hours:19 how:229 how__and:47 how__do:22
how__for:25 how__i:-31 how__is:54 how__it:-20 how__time:-55 how__to:27 how__was:33 how__we:22 how__would:18
how_come:-56 how_do:-39 how_is:-24 how_long:20 how_many:24 how_much:354 humo:-23 husband:22 i__a:24 i__an:18
i__anything:22 i__it:-29 i__paid:-44 i__to:34 i_can:29 i_going:19 i_owe:40 i_paid:-24 i_pay:24 i_was:-30 idea:30
if:31 if_you:19 im:-33 im_not:-19 in__what:24 in_the:-26 invoice:-46 invoice_$:-26 is:-22 is__a:29 is__address:-26
is__cost:31 is__do:-30 is__for:-52 is__free:106 is__going:31 is__labor:51 is__oil:22 is__on:-31 is__price:31
is__really:45 is__run:105 is__still:50 is__total:25 is__wifi:-31 is__with:-21 is_a:-23 is_an:35 is_it:88 is_that:50
is_the:81 is_there:63 is_this:-42 is_tight:-24 is_wrong:-26 it:78 it_$:-36 it__for:-20 it__free:33 it__like:27
it__or:22 it__under:80 it_a:-32 it_be:49 it_cost:58 it_do:-33 it_for:-53 it_is:-34 it_really:36 it_run:49 it_still:62
job:40 just:46 know:-20 la:-24 la__y:21 la_cara:-19 la_factura:-20 la_otra:24 la_ultima:-22 labor:100 labor_$:67
las_$:-46 las_cuatro:18 las_dos:18 last_time:-18 le:-63 le__a:-20 le_sale:-27 left:-62 left_on:-35 les:-48 life:-34
like_a:-20 like_the:22 llantas:21 lo:-63 lo__que:30 lo_mismo:18 lo_que:-24 long:33 long_$:53 longer:-36 look_at:25
looking:47 looking_at:38 mano:21 mano__obra:23 mano_de:23 many:23 mas_$:-36 mas__menos:39 mas_barato:21 mas_de:34
mas_o:39 me:45 me_$:25 me__a:29 me__cuanto:22 me__dar:29 me__de:-28 me__muy:19 me__price:28 me__que:-28 me__the:18
me__un:51 me__una:23 me__what:19 me_back:46 me_cobran:34 me_cobraron:-66 me_da:78 me_dice:24 me_espero:-37 me_for:-28
me_it:18 me_lo:-33 me_now:-23 me_puede:29 me_sale:42 me_the:48 me_van:26 me_with:44 mean:-25 mean_$:-19 mejor:-24
menos:55 mi:-28 money:-78 money_$:-44 money__tight:-25 money_is:-25 more:-18 much:239 much_$:44 much__how:39
much__i:31 much__it:108 much__the:32 much_and:33 much_for:45 much_is:99 much_obliged:-24 much_time:-55 much_to:38
much_would:32 must:-26 muy:-40 muy_caro:-36 my:-45 my__go:-37 my__is:-45 my_bill:-78 my_warranty:36 need_$:-37
need_a:18 no:21 no__is:-43 no_but:22 no_thanks:27 no_what:-35 nomas:51 not:-73 not_at:-33 now:-67 now_$:-62 number:43
number_$:37 o:57 o_menos:39 obliged:-24 obra:23 ocupan:-31 of:18 of_my:-27 of_the:20 off:-37 off_$:-37 oh:-20
oil_change:36 ok:-39 ok_but:-19 on_$:28 on_the:-21 on_what:25 one__much:25 open:-19 or:109 or_$:28 or__i:21 or_do:22
out:36 out__door:20 out_of:21 out_the:19 pague:-20 paid:-79 paid_$:-40 para:68 pay_$:36 perdida:-29 perdida_total:-29
pero:48 pick:20 place:39 please:30 please_$:41 por:188 precio:197 precio_$:56 precio_de:27 precio_que:18 precio_y:23
price:163 price_$:75 price__the:18 price_on:25 prices:-34 primero:23 pueda:-38 pueda_$:-38 puede:20 pues:-21 que:-88
que__caro:56 que_es:-20 que_la:21 que_precio:46 que_tan:30 que_tanto:18 queda:-50 queda_$:-44 quien:-29 quiero:20
quiero_saber:27 quote:55 quote_$:-42 rate:27 rato:-65 rato_me:-33 really:56 really_free:52 refund:-52 refund_$:-39
remind:22 remind_me:22 right:-18 right_now:-29 rough:28 run:201 run_$:121 run_me:51 saber:37 said:19 said_$:23
sale:-61 sale_humo:-21 sale_mas:23 sale_y:26 salir:-33 salir_$:-27 sat:24 saturday:18 say:32 says:-18 se:-193
se_tardan:-37 send_me:24 ser:32 ser_$:25 seria:71 seria_$:32 servicio:20 set:74 set__back:42 set_me:42 set_of:39
shop:-35 si:50 so:-26 so_i:23 so_much:-38 still:54 still_$:29 still__the:20 struts:18 sure:35 take:-49 tan:30
tan__es:26 tan_caro:52 tarda:-36 tarda_$:-24 tardan:-47 tardan_$:-37 tarde:18 tax:52 tax_$:54 tell:98 tell__the:21
tell_me:69 tempranito:23 tengo:-20 text:-18 th_$:-24 th_and:21 than:-30 than_the:-22 thank:-23 thank__so:-22
thank_you:-23 that:28 that_$:-60 that__be:-21 that__to:28 that_be:25 that_is:-40 that_would:-21 the:70 the__and:36
the__was:-29 the_address:-18 the_bill:25 the_cost:32 the_damage:19 the_invoice:-19 the_price:23 the_quote:-61
the_tires:-22 the_total:32 them:-54 them_$:-53 there:24 there_$:-25 there__charge:28 there_a:67 these:45
these_days:62 thing:-42 this:-23 this_one:18 though:25 thursday_and:20 tiempo:-64 tiene:29 tienen_el:18 tight:-27
time:-85 time__it:-23 time__you:-44 time_do:-47 tires:18 to:36 to_$:29 to__at:28 to__for:-31 to__me:34 to__the:18
to_fix:18 to_it:-25 to_look:35 to_set:20 to_wait:19 toma:-39 toma_$:-30 too:-111 too__for:-41 too_much:-51 took:-19
total:85 trabajo:-24 trabajo_$:-18 twice:-26 twice_$:-22 ultima:-23 un:47 una:31 under:60 under_my:39 up:25 up_$:30
va:52 va__salir:22 va__ser:28 va_a:53 vale:60 van__cobrar:20 vemos:19 very:-25 wait:24 wanted:24 warranty:39
warranty_$:29 was:-48 was_it:32 we_talking:20 what:123 what_$:-53 what__an:35 what__i:72 what__is:-41 what__that:51
what__the:74 what__this:-22 what__wrong:-18 what__you:91 what_a:-19 what_am:35 what_are:70 what_do:89 what_for:-39
what_i:-33 what_time:-27 what_will:30 what_would:131 when:-78 when__get:-41 when_i:-43 which:-41 who:-34 why:-63
why_$:-27 wifi:-46 wifi_$:-34 will:54 will__be:34 will_it:46 wise_$:22 with:35 with_a:23 with_tax:52 would:62
would_be:-33 would_that:51 would_the:32 would_you:-29 wrong:-30 wrong_with:-21 y:230 y__a:26 y__estan:41 y__por:43
y_a:18 y_como:-38 y_cuanto:70 y_de:32 y_donde:34 y_en:21 y_si:21 y_tiempo:39 yes_$:-31 yes__how:20 yes__it:37
yes__the:-21 yet:18 you:-40 you_$:-26 you__for:94 you__have:35 you__me:-18 you__much:-29 you__my:-24 you__or:27
you__the:-21 you_be:-42 you_charge:58 you_charged:-25 you_get:31 you_guys:18 you_need:-41 you_say:25 you_so:-22
you_take:-40 you_want:22
"""
