"""What speaks for and against `price`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "price"
BIAS = -192
WEIGHTS = """\
#abaj:-54 #aber:46 #abin:-28 #abor:133 #abou:-42 #abra:-38 #acei:29 #acer:-31 #acio:44 #addr:-30 #affo:-30 #afte:54
#agai:25 #agno:29 #ague:-23 #ahor:30 #akes:34 #alat:27 #alca:44 #ales:76 #algu:48 #alig:38 #alir:-46 #alki:40
#alla:-26 #allp:148 #ally:79 #ance:39 #anda:40 #ange:37 #angi:-61 #anit:29 #anta:33 #ante:25 #anto:104 #anty:52
#anyt:36 #anyw:32 #anza:42 #aper:24 #appr:-66 #arat:36 #arda:-146 #arge:40 #argi:103 #argo:33 #arly:22 #aron:-138
#arra:44 #arro:-26 #asta:-26 #asto:-37 #atan:-34 #atas:27 #atch:39 #ated:-63 #ater:29 #atis:142 #atro:30 #bajo:-31
#bala:41 #ball:146 #band:26 #bank:-65 #bara:27 #batt:23 #been:-22 #befo:68 #bien:-52 #bill:-114 #blan:-25 #blig:-43
#both:26 #bout:-49 #brak:62 #bran:87 #brar:-91 #brea:-22 #brok:-39 #buck:-38 #cabi:-28 #canc:39 #canz:38 #carg:28
#caro:-30 #cash:-43 #ceit:29 #cela:30 #chan:-49 #char:146 #chea:28 #chec:39 #cial:221 #cias:27 #ciat:-70 #cion:64
#cobr:50 #como:27 #comp:40 #cosa:-28 #cost:442 #coti:73 #coun:74 #coup:63 #cove:69 #ctur:-30 #cuan:30 #cuat:30
#cuen:82 #cues:28 #cupa:-43 #curi:58 #dari:-26 #days:85 #ddre:-30 #deal:-24 #deci:26 #deje:-30 #deme:34 #demo:-68
#depe:43 #desc:94 #diag:29 #dias:-47 #dice:26 #dida:-35 #diga:100 #dila:-46 #dime:43 #dine:-81 #disc:87 #doin:-68
#doll:28 #dond:32 #down:-26 #dred:35 #dres:-39 #dria:29 #driv:-34 #dura:-107 #eall:73 #eals:38 #eape:28 #ease:23
#ebaj:30 #eces:-25 #ecia:164 #ecio:238 #ecti:25 #efor:68 #efun:-71 #eite:29 #ejor:-28 #elar:32 #emin:23 #emor:-65
#empo:-66 #empr:23 #enar:-30 #ende:-25 #ends:67 #enen:-25 #engo:-22 #enos:71 #enta:-36 #ento:82 #entr:-47 #epen:43
#eran:29 #erar:-24 #eras:27 #erdi:-44 #ered:57 #eren:-25 #eria:59 #erio:-23 #eron:-55 #escu:91 #esda:-32 #espe:30
#esta:22 #este:-23 #esti:197 #eter:30 #etic:43 #etie:-28 #evis:50 #fact:-27 #feel:-22 #feri:-28 #ffor:-27 #figu:42
#firs:29 #flui:-29 #ford:-30 #fore:67 #foun:-27 #four:31 #free:204 #fren:-42 #from:-73 #fron:24 #fter:54 #fund:-74
#gain:25 #game:91 #gast:-60 #gent:-39 #ging:42 #give:47 #gnme:38 #gnos:29 #goin:101 #gone:26 #grac:27 #gran:-24
#grat:142 #gure:42 #guys:23 #hank:-25 #harg:143 #heap:27 #heck:32 #here:22 #hese:58 #hich:-55 #high:-82 #hora:32
#hose:-25 #houg:28 #hour:32 #hous:31 #humo:-32 #hund:35 #hurs:23 #husb:28 #iagn:29 #iate:-70 #ible:-24 #ices:-51
#icio:40 #idad:23 #idea:41 #iemp:-61 #igam:84 #iged:-36 #ight:-77 #ignm:38 #igur:42 #ilat:-46 #ilte:-34 #imad:127
#imat:94 #imer:26 #iner:-81 #inte:31 #invo:-77 #iosi:38 #irst:29 #isco:91 #isio:40 #izac:59 #just:55 #king:62
#labo:133 #lace:48 #lant:26 #lars:30 #lcan:44 #left:-83 #lgun:45 #life:-49 #lige:-36 #lign:38 #line:28 #lkin:40
#llan:32 #llar:28 #llpa:148 #look:66 #lpar:148 #lter:-33 #ltim:-30 #luid:-27 #mado:114 #mano:27 #many:31 #mate:88
#mber:65 #mbia:-24 #mbio:29 #medi:-25 #mejo:-28 #meno:71 #meri:38 #mero:45 #mone:-108 #mora:-65 #more:-22 #mpre:27
#much:236 #must:-38 #ncel:33 #nder:67 #ndre:34 #need:-31 #nero:-66 #nger:-56 #ngin:-75 #nmen:38 #noma:65 #nost:24
#nted:27 #ntet:22 #ntos:-51 #numb:68 #nume:61 #nvoi:-64 #nyth:37 #nywa:32 #obli:-43 #obra:77 #ocke:-22 #ocup:-30
#oice:-65 #oing:33 #okin:41 #olla:27 #omas:76 #omes:26 #ompr:27 #onde:22 #oney:-108 #onge:-42 #ooki:49 #open:-31
#osti:30 #osto:129 #otal:107 #otiz:73 #ough:67 #ould:90 #ound:-30 #ount:71 #oupo:66 #over:46 #oxim:27 #pago:-30
#pagu:-23 #paid:-108 #para:100 #park:142 #pase:37 #pass:-30 #peci:226 #pect:27 #pend:32 #pera:-27 #perd:-54 #pick:42
#plac:40 #plea:23 #podr:24 #pong:33 #pons:78 #ppre:-65 #prec:163 #pres:43 #pric:114 #prim:31 #prox:26 #pued:-58
#qued:-62 #quic:-23 #quie:-32 #quot:62 #raba:-46 #raci:24 #rake:62 #rand:-38 #rani:27 #rant:50 #raro:-100 #rate:28
#rati:141 #rato:-47 #rdan:-43 #rdar:-54 #rdid:-39 #read:-28 #reak:-22 #real:78 #reci:137 #reco:-25 #refu:-75 #remi:23
#rena:-27 #repo:-28 #ress:-42 #revi:50 #rged:-84 #rgen:-38 #rgin:103 #rice:89 #righ:-32 #rime:26 #rios:33 #rito:45
#rive:-31 #robo:-39 #roke:-39 #rong:-38 #roug:31 #roxi:27 #rque:-27 #rran:43 #ruts:22 #rvic:22 #sabe:42 #said:24
#sale:-64 #sali:-52 #sban:28 #scou:88 #scue:92 #seri:71 #shop:-44 #sibl:-24 #sint:22 #sion:37 #spec:243 #sper:-85
#stad:-29 #stan:44 #star:31 #sted:-23 #stee:28 #stil:66 #stim:202 #stoy:-24 #supp:-29 #sure:31 #tado:-40 #take:-70
#talk:40 #tard:-139 #tart:23 #tell:131 #teng:-30 #tera:25 #tery:23 #teti:22 #than:-69 #that:34 #them:-73 #ther:33
#thes:58 #this:-22 #thou:34 #tiem:-74 #tigh:-35 #till:59 #tima:173 #time:-93 #tion:23 #tiza:73 #toma:-71 #tomo:24
#took:-25 #tota:107 #trab:-50 #tran:-23 #trea:-22 #truc:24 #trut:22 #tura:-32 #twic:-36 #uand:-51 #uant:98 #uatr:30
#ucho:-28 #ucks:-38 #ueda:-120 #uent:80 #uest:52 #uick:-23 #ulti:-30 #umbe:68 #umer:61 #unde:77 #undr:35 #unte:-28
#unts:39 #uote:62 #upan:-43 #upon:54 #uran:-73 #urge:-37 #urio:58 #usba:28 #vale:77 #vece:-22 #vemo:24 #vera:29
#vere:58 #very:-32 #vete:29 #vici:30 #vida:-22 #visi:39 #voic:-65 #vuel:-22 #wait:39 #want:51 #warr:52 #what:179
#when:-99 #whic:-55 #wice:-36 #wifi:-69 #will:66 #with:45 #woul:74 #wron:-38 #ythi:40 #yway:32 #zaci:59
%again_later%agree:-32 %again_later%bring:36 %again_later%call_off:27 %again_later%doubt:26 %again_later%how_long:67
%again_later%lift:-32 %again_later%money:-65 %again_later%pay_day:42 %again_later%place:22 %again_later%refuse:39
%again_later%season:34 %again_later%start_again:31 %again_later%thanks:-25 %again_later%wrong_one:43 %agree%away:-36
%agree%call_off:27 %agree%doubt:53 %agree%fails:-28 %agree%gone_car:28 %agree%leave_me:30 %agree%machine:23
%agree%money:102 %agree%phone:-27 %agree%place:-72 %agree%question:135 %agree%smoke_smell:-49 %agree%wrong_one:37
%away%bad:-30 %away%bring:-25 %away%question:32 %away%refuse:29 %away%start_again:26 %bad:-103 %bad%do_it:-24
%bad%gone_car:-27 %bad%money:-58 %bad%question:-49 %bring:42 %bring%call_off:39 %bring%car_part:34 %bring%do_it:40
%bring%money:53 %bring%pay_day:30 %bring%question:95 %bring%start_again:49 %busy%car_part:35 %busy%money:-27
%call_off:-66 %call_off%doubt:27 %call_off%money:72 %call_off%question:71 %call_off%thanks:41 %car%how_long:-25
%car%on_way:-23 %car%pay_day:28 %car%question:23 %car%shift_it:24 %car_part:39 %car_part%do_it:86 %car_part%doubt:27
%car_part%elsewhere:22 %car_part%gone_car:33 %car_part%how_long:28 %car_part%money:137 %car_part%phone:37
%car_part%question:92 %car_part%refuse:38 %car_part%shift_it:49 %car_part%smoke_smell:-23 %car_part%wrong_one:27
%do_it:-52 %do_it%doubt:30 %do_it%money:-22 %do_it%on_way:36 %do_it%opening:25 %do_it%question:80 %do_it%season:-22
%do_it%shift_it:79 %do_it%staff:-25 %doubt:58 %doubt%elsewhere:26 %doubt%question:45 %elsewhere%money:-38
%elsewhere%pay_day:24 %elsewhere%place:22 %elsewhere%question:33 %elsewhere%refuse:40 %elsewhere%staff:-26 %fails:-76
%fails%how_long:-36 %fails%money:-45 %family%question:51 %family%refuse:45 %gone_car:-33 %gone_car%lift:-23
%gone_car%money:41 %gone_car%pay_day:53 %gone_car%question:34 %gone_car%refuse:25 %gone_car%shift_it:41
%how_long:-128 %how_long%lift:27 %how_long%money:-96 %how_long%on_way:-44 %how_long%question:-186
%how_long%wrong_one:30 %leave_me:-87 %leave_me%money:-38 %lift:-41 %lift%money:-22 %lift%question:-54 %lift%refuse:23
%lift%wrong_one:23 %machine%money:23 %meaning:-143 %meaning%money:44 %meaning%question:-89 %message:-28 %money:534
%money%noise:25 %money%on_way:67 %money%opening:30 %money%pay_day:-62 %money%phone:69 %money%question:305
%money%season:26 %money%shift_it:43 %money%smoke_smell:-52 %money%staff:-27 %money%wrong_one:68 %odometer:-51
%on_way%question:-35 %pay_day%question:50 %pay_day%shift_it:28 %pay_day%wrong_one:39 %phone%wrong_one:24 %place:-49
%place%question:-112 %place%shift_it:34 %question:46 %question%refuse:110 %question%shift_it:108 %question%staff:-23
%question%start_again:92 %question%thanks:56 %question%who:-76 %refuse%shift_it:35 %refuse%thanks:30
%refuse%wrong_one:-27 %smoke_smell:-90 %staff:-71 %staff%wrong_one:-33 %start_again:55 %thanks:-147 %who:-99 @?:200
@after_visit:-130 @car:57 @confirm_stop:-27 @nothing:58 @reading:38 ^_a:97 ^_after:27 ^_am:28 ^_antes:23 ^_any:98
^_ballpark:117 ^_bank:-50 ^_before:26 ^_call:25 ^_can:47 ^_cobran:49 ^_como:-60 ^_con:28 ^_cost:38 ^_cuando:-27
^_cuanto:-187 ^_cuantos:-41 ^_depends:55 ^_did:37 ^_do:62 ^_does:61 ^_el:-61 ^_en:-40 ^_esta:-57 ^_for:-25 ^_give:23
^_got:92 ^_hasta:22 ^_hay:81 ^_how:-176 ^_i:-113 ^_is:185 ^_it:-33 ^_later:27 ^_le:-40 ^_mas:39 ^_much:-88 ^_muy:-22
^_need:23 ^_no:-30 ^_not:-56 ^_oh:-23 ^_para:25 ^_precio:49 ^_price:36 ^_que:33 ^_sale:-223 ^_salir:-62 ^_sure:46
^_thank:-32 ^_thanks:-29 ^_that:-44 ^_the:-70 ^_tienen:26 ^_too:-73 ^_what:-114 ^_when:-48 ^_which:-43 ^_who:-27
^_why:-96 ^_y:-59 ^_you:-117 a:124 a__el:44 a__filter:-30 a__first:31 a__for:108 a__la:26 a__lo:36 a__off:-23
a__on:27 a__thing:-22 a_bot:-26 a_brake:22 a_cabin:-31 a_charge:31 a_como:242 a_las:-128 a_price:49 a_salir:28
a_ser:40 a_set:49 a_ver:26 about:-41 abran:-32 aceite:24 address:-30 address_$:-22 afford:-30 afford_it:-28 after:40
again:26 ahi:-72 ahi_$:-52 alcanza:40 algun:45 alignment:49 all:72 all_$:27 all_day:-31 alla:-25 am:63 am__going:24
am_i:66 an:128 an__change:32 an_oil:32 and:185 and__are:-25 and__i:41 and__is:39 and__long:33 and__much:75 and_do:39
and_how:123 and_what:50 and_you:-31 anda:54 any:249 anything:37 anything_$:31 anyway:32 anyway_$:32 appreciated:-53
are:47 are__a:-23 are_we:31 are_you:46 at:51 at__place:23 at_it:30 at_the:-26 at_your:23 back_$:24 balatas:27
ballpark:148 ballpark_$:106 bank:-65 barato:27 battery:23 be_$:102 be__to:-29 be_a:-27 be_doing:-62 been:-22
before:59 before_i:63 bien:-44 bill:-109 bill_was:-35 bot:-26 bot_$:-25 both:27 brake:25 brakes:37 break:-22
broke:-30 bucks:-38 budget_$:23 but:-42 but__much:27 but_how:26 but_the:-30 by:-35 cabin:-33 cabin_filter:-30
cambio:29 cambio__aceite:23 can:80 can__get:68 can_i:22 can_you:34 cancelar:32 car:-33 cargo:33 caro:-22 caro_$:-25
cash:-43 change:40 changing:-57 charge:121 charge_$:23 charge_for:38 charged:-73 charged__for:-24 charged_me:-40
charging:103 cheaper:28 cien:23 cien_$:22 cobran:130 cobran__por:32 cobran_algo:32 cobran_por:73 cobraron:-100
cobraron__mas:-38 cobraron_de:-38 come_$:-34 come_to:40 comes:22 como:26 como_$:46 como__se:-30 como_cuanto:-128
como_lo:23 con:44 cosa:-30 cost:288 cost_$:128 cost_and:42 costo:129 costo_$:35 cotizacion:60 could_you:28 covered:58
cuando:-51 cuanto:114 cuanto_$:41 cuanto__a:32 cuanto__el:49 cuanto__es:-30 cuanto__las:22 cuanto__me:-133
cuanto__para:25 cuanto__por:34 cuanto__que:40 cuanto__tardan:-40 cuanto__y:110 cuanto_anda:39 cuanto_cuesta:47
cuanto_demora:-56 cuanto_dura:-41 cuanto_era:36 cuanto_es:111 cuanto_mas:-82 cuanto_por:99 cuanto_rato:-78
cuanto_sale:51 cuanto_se:-175 cuanto_seria:81 cuanto_tarda:-23 cuanto_tengo:30 cuanto_tiempo:-115 cuanto_va:34
cuanto_vale:71 cuantos:-50 cuantos_dias:-43 cuatro:30 cuesta:27 cuesta_y:22 da:103 damage:29 dan:37 dar:37 days:70
days_$:78 de:138 de_$:22 de__como:34 de__de:29 de_a:28 de_aceite:28 de_cuanto:26 de_la:-26 de_las:28 de_mas:-42
de_obra:30 deal:-47 deja:25 del:-22 demora:-58 demora_$:-48 depends:55 descuento:83 dia:-39 dia_$:-24 dias:-47
dice:29 did:-37 did_it:-25 did_my:-55 did_you:25 digame:84 digame__precio:23 digame_cuanto:32 digame_el:28 dime:43
dinero:-82 dinero_$:-44 discount:48 do:61 do_$:-73 do__charge:68 do__get:40 do__go:24 do__guys:48 do__need:-40
do__owe:30 do__take:-56 do__use:-25 do_i:65 do_you:61 does__cost:44 does_it:22 does_that:-24 doing:-68 doing_$:-33
doing__it:-33 doing_to:-33 dollars:30 dollars_$:22 donde:32 donde_estan:67 down:-30 down_on:-22 drive:-26 due:-30
due_for:-22 dura:-35 early:22 el:111 el__a:-35 el__cuanto:23 el__de:55 el__para:42 el_cambio:34 el_costo:68
el_dinero:-36 el_lunes:-34 el_otro:23 el_precio:83 el_sabado:-22 el_total:47 en:47 en__anda:39 en__me:58 en__se:-49
en_cuanto:55 en_el:-35 era:42 era_$:28 es:88 es_$:26 es__de:31 es_de:-23 es_eso:-23 es_gratis:141 es_lo:24 es_un:-38
es_y:49 esperar:-23 esperar_$:-22 espero:-54 espero_$:-53 esta:-50 esta__caro:-36 estan:47 estar:-24 estimado:109
estimate:94 estimate_$:49 estoy:-24 ever:29 factura:-26 fee:82 feria:-28 figure:42 filter:-38 filter_$:-29 first:29
first_$:29 fix:22 fluid:-29 for:81 for_$:-92 for_a:42 for_free:-32 for_me:-45 for_that:33 for_the:68 for_these:38
for_this:30 for_what:-43 found:-27 four:31 free:213 free_$:195 frenar:-26 frenar_$:-26 friday:-22 friday_$:-22
from:-73 from_the:-52 front:24 fue:-30 get:33 get__a:39 get_a:62 get_for:68 get_paid:-57 give:47 give_me:40 go_for:69
going:101 going_on:36 going_to:67 gone:26 got_any:69 got_to:22 gracias:27 gratis:142 gratis_$:108 guys:23 hablan:-22
hace:44 hay:107 high:-30 hours:24 how:252 how__and:60 how__do:28 how__for:29 how__i:-41 how__is:56 how__it:-28
how__time:-74 how__to:35 how__was:48 how__we:24 how__would:22 how_come:-82 how_do:-50 how_is:-36 how_long:29
how_many:31 how_much:425 hoy:-22 humo:-30 husband:28 i__a:30 i__an:25 i__anything:28 i__it:-35 i__paid:-60
i__there:-23 i__to:42 i_can:37 i_going:24 i_owe:49 i_paid:-29 i_pay:30 i_was:-39 idea:41 if:42 if_you:24 im:-41
im_not:-26 in__what:30 in_the:-31 invoice:-64 invoice_$:-39 is:-42 is__a:35 is__address:-30 is__cost:37 is__do:-42
is__for:-69 is__free:149 is__going:35 is__labor:73 is__oil:26 is__on:-45 is__price:39 is__really:61 is__run:146
is__still:62 is__total:31 is__wifi:-46 is__with:-28 is_a:-31 is_an:42 is_it:101 is_that:68 is_the:103 is_there:80
is_this:-50 is_tight:-32 is_too:-24 is_wrong:-34 it:102 it_$:-53 it__for:-23 it__free:42 it__like:34 it__or:28
it__under:109 it_a:-45 it_be:55 it_cost:75 it_do:-45 it_for:-73 it_is:-39 it_really:50 it_run:60 it_still:77 job:50
just:58 know:-23 la:-23 la__y:26 la_cara:-26 la_factura:-26 la_otra:30 la_ultima:-28 labor:133 labor_$:92 las_$:-60
las_cuatro:23 las_dos:22 last_time:-24 late:-23 le:-79 le__a:-26 le_sale:-34 left:-83 left_on:-50 les:-66 life:-49
like_a:-24 like_the:27 llantas:25 lo:-76 lo__que:38 lo_dan:22 lo_mismo:23 lo_que:-36 long:46 long_$:69 longer:-43
look_at:38 looking:57 looking_at:47 mano:28 mano__obra:30 mano_de:30 many:31 mas:-35 mas_$:-51 mas__menos:51
mas_barato:26 mas_de:42 mas_o:51 me:45 me_$:34 me__a:35 me__cuanto:27 me__dar:38 me__de:-39 me__muy:32 me__price:40
me__que:-39 me__the:23 me__un:72 me__una:34 me__what:24 me_a:-22 me_back:61 me_cobran:43 me_cobraron:-92 me_da:110
me_dice:30 me_espero:-53 me_for:-35 me_it:22 me_lo:-41 me_now:-32 me_puede:37 me_sale:58 me_the:60 me_van:31
me_with:55 mean:-29 mean_$:-22 mejor:-28 menos:71 mi:-31 money:-105 money_$:-60 money__tight:-33 money_is:-33
more:-23 much:250 much_$:41 much__how:49 much__i:38 much__it:135 much__the:40 much_and:42 much_for:54 much_is:118
much_obliged:-36 much_time:-74 much_to:49 much_would:38 must:-38 muy:-50 muy_caro:-46 my:-53 my__go:-54 my__is:-62
my_bill:-111 my_invoice:-24 my_warranty:53 need_$:-52 need_a:26 no:27 no_$:-22 no__is:-60 no_but:27 no_thanks:41
no_what:-50 nomas:65 not:-91 not_at:-44 now:-89 now_$:-85 number:55 number_$:47 o:74 o_menos:51 obliged:-36 obra:30
obra_$:22 ocupan:-43 of:23 of_my:-38 of_the:25 off:-49 off_$:-50 oh:-25 oil_change:44 ok:-46 ok_but:-25 on_$:42
on_the:-25 on_what:32 one:23 one__much:30 open:-23 or:136 or_$:35 or__i:26 or_do:27 out:48 out__door:25 out_of:26
out_the:23 pague:-24 paid:-102 paid_$:-53 para:88 pay_$:45 perdida:-39 perdida_total:-38 pero:62 pick:25 place:52
place_$:22 please:35 please_$:50 por:236 por_eso:24 precio:240 precio_$:68 precio_de:33 precio_que:22 precio_y:29
price:204 price_$:97 price__the:23 price_on:30 prices:-48 primero:30 pueda:-56 pueda_$:-56 puede:27 pues:-26
pues_$:-22 que:-110 que__caro:78 que__otro:-24 que_es:-27 que_la:26 que_precio:53 que_tan:43 que_tanto:22 queda:-71
queda_$:-64 quien:-32 quiero:27 quiero_saber:34 quote:72 quote_$:-60 rate:34 rato:-84 rato_me:-46 really:73
really_free:70 refund:-71 refund_$:-56 remind:28 remind_me:28 right:-26 right_now:-41 robo:-27 rough:35 run:271
run_$:165 run_me:71 saber:47 said:24 said_$:29 sale:-78 sale_humo:-27 sale_mas:29 sale_y:31 salir:-46 salir_$:-39
sat:26 say:39 se:-237 se_queda:-24 se_tardan:-41 send_me:34 ser:39 ser_$:30 seria:90 seria_$:39 servicio:30 set:98
set__back:56 set_me:56 set_of:49 shop:-43 si:60 sintetico:22 so:-37 so_i:29 so_much:-56 still:67 still_$:35
still__the:25 struts:22 sure:43 take:-65 talking:22 tan:43 tan__es:39 tan_caro:73 tarda:-42 tarda_$:-29 tardan:-51
tardan_$:-42 tarde:22 tax:73 tax_$:74 tell:124 tell__the:27 tell_me:88 tempranito:29 tengo:-22 text:-24 th_$:-29
th_and:26 than:-44 than_the:-35 thank:-33 thank__so:-30 thank_you:-32 that:35 that_$:-94 that__be:-29 that__to:40
that_be:38 that_is:-52 that_would:-28 the:84 the__and:47 the__was:-40 the_address:-22 the_bill:33 the_cost:39
the_damage:24 the_invoice:-26 the_quote:-90 the_tires:-31 the_total:40 them:-73 them_$:-72 there:30 there_$:-36
there__charge:33 there_a:86 these:58 these_days:78 thing:-57 this:-22 this_one:23 though:33 though_$:22
thursday_and:25 tiempo:-73 tiene:36 tight:-35 time:-113 time__it:-29 time__you:-60 time_do:-64 to:44 to_$:38
to__at:40 to__for:-42 to__me:46 to__the:23 to_fix:24 to_it:-34 to_look:50 to_set:30 to_wait:23 toma:-47 toma_$:-36
too:-157 too__for:-56 too_much:-73 took:-25 total:111 trabajo:-30 trabajo_$:-24 twice:-36 twice_$:-32 ultima:-29
un:61 una:44 under:81 under_my:58 up:29 up_$:40 urgent:-24 urgent_$:-22 va:64 va__salir:27 va__ser:34 va_a:64 vale:81
van__cobrar:24 veces:-22 vemos:24 very:-33 wait:32 wanted:29 warranty:52 warranty_$:42 was:-60 was_it:47
we_talking:25 what:152 what_$:-65 what__an:44 what__i:90 what__is:-49 what__it:-29 what__that:65 what__the:93
what__this:-27 what__wrong:-24 what__you:117 what_a:-27 what_am:44 what_are:99 what_do:113 what_for:-52 what_i:-42
what_time:-33 what_will:38 what_would:167 when:-97 when__get:-54 when_i:-56 which:-54 who:-37 why:-87 why_$:-38
wifi:-69 wifi_$:-52 will:66 will__be:40 will_it:57 wise_$:28 with:49 with_a:28 with_tax:71 would:70 would_be:-43
would_that:69 would_the:39 would_you:-44 wrong:-38 wrong_with:-27 y:290 y__a:33 y__estan:55 y__por:54 y_a:22
y_como:-51 y_cuanto:84 y_de:41 y_donde:46 y_en:27 y_si:27 y_tiempo:49 yes_$:-38 yes__how:23 yes__it:56 yes__the:-30
yes_but:-25 yet:23 you:-49 you_$:-31 you__bot:-24 you__for:117 you__have:49 you__me:-23 you__much:-41 you__my:-28
you__or:33 you__the:-28 you__to:24 you_a:-25 you_are:-22 you_be:-61 you_charge:78 you_charged:-33 you_get:42
you_guys:27 you_need:-57 you_say:31 you_so:-30 you_take:-56 you_use:-22 you_want:28 your_place:23
"""
