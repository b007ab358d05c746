"""What speaks for and against `price`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "price"
BIAS = -163
WEIGHTS = """\
#abaj:-37 #aber:24 #abin:-26 #abor:119 #abou:-35 #abra:-23 #acei:19 #acer:-22 #acia:23 #acio:51 #addr:-19 #affo:-20
#afte:33 #agai:18 #ahor:29 #akes:26 #alat:19 #alca:48 #ales:70 #algo:25 #algu:45 #alig:23 #alir:-32 #alki:45
#alla:-19 #allp:99 #ally:59 #ance:34 #ando:-38 #ange:35 #angi:-50 #anit:19 #anot:-18 #anta:21 #ante:28 #anto:89
#anty:54 #anyt:20 #anyw:27 #anza:41 #appr:-58 #arat:21 #arda:-93 #arge:26 #argi:90 #argo:24 #aron:-94 #arra:51
#asta:-22 #asti:-20 #atan:-38 #atas:19 #atch:42 #ated:-61 #ater:24 #atis:105 #bajo:-24 #bala:21 #ball:98 #bank:-55
#batt:27 #beat:23 #befo:43 #bien:-35 #bill:-101 #blan:-29 #blig:-40 #body:-18 #both:28 #bout:-39 #brak:39 #bran:47
#brar:-67 #brea:-18 #brok:-23 #buck:-25 #cabi:-26 #cali:18 #canc:35 #cant:-20 #canz:42 #cara:-18 #carg:20 #ceit:19
#celo:18 #chan:-32 #char:120 #cial:187 #cias:34 #ciat:-62 #cien:21 #cier:-26 #cion:67 #cobr:22 #come:-36 #cost:309
#coul:22 #coun:66 #coup:45 #cove:62 #ctur:-18 #cuen:75 #cuer:25 #cues:23 #cupa:-36 #curi:41 #days:63 #ddre:-19
#deal:-19 #deje:-23 #deme:26 #demo:-47 #depe:35 #desc:78 #dias:-39 #dice:28 #dida:-33 #diga:72 #dila:-51 #dime:25
#dine:-58 #disc:82 #doin:-65 #doll:37 #dond:32 #done:-20 #down:-27 #dres:-28 #dria:21 #driv:-23 #dura:-86 #eall:61
#eals:33 #ease:35 #ebaj:24 #eces:-22 #ecia:123 #ecio:202 #ecti:22 #ecue:18 #efor:43 #efun:-59 #eite:19 #emor:-44
#empo:-57 #empr:22 #enar:-24 #ends:40 #enen:-18 #enos:42 #enta:-23 #ente:-20 #ento:73 #entr:-34 #epen:35 #eran:22
#erar:-20 #erdi:-35 #ered:49 #eria:30 #erlo:-18 #eron:-35 #ervi:20 #escu:75 #esti:146 #esto:-18 #eter:26 #etic:29
#etim:20 #evis:47 #fact:-18 #feel:-21 #feri:-20 #figu:48 #filt:-28 #firs:28 #flui:-27 #ford:-20 #fore:42 #four:21
#free:149 #fren:-29 #from:-63 #fron:34 #fter:33 #fund:-60 #gain:18 #game:59 #gast:-50 #gent:-32 #ging:40 #give:27
#gnme:23 #goin:79 #grac:34 #grat:104 #gure:48 #guys:27 #hang:-23 #harg:116 #have:24 #head:22 #hell:-18 #here:29
#hese:47 #hich:-44 #high:-74 #hora:31 #hose:-24 #houg:23 #hous:22 #humo:-18 #hurs:22 #iate:-62 #ible:-23 #ices:-37
#icio:30 #idad:21 #idea:32 #iemp:-42 #igam:50 #ight:-53 #ignm:23 #igur:48 #ilat:-51 #ilte:-33 #imad:88 #imat:69
#iner:-58 #inte:30 #invo:-67 #iosi:29 #irst:28 #isco:86 #isio:34 #ismo:27 #just:48 #king:45 #labo:119 #lace:44
#lado:18 #lant:20 #lars:38 #lata:-37 #lcan:48 #leas:33 #left:-66 #lgun:35 #lies:-18 #life:-46 #lige:-37 #lign:23
#line:26 #lkin:45 #llan:19 #llar:37 #llpa:99 #long:-32 #look:59 #lpar:99 #lter:-33 #ltim:-23 #luid:-27 #lunc:20
#lune:-21 #mado:76 #mano:18 #many:26 #mate:66 #mber:48 #mean:-24 #meno:38 #meti:23 #mism:27 #mone:-75 #mora:-44
#more:-38 #morr:24 #mpre:29 #much:183 #must:-35 #ncel:28 #ndan:-18 #nder:73 #need:-32 #nero:-56 #nger:-49 #ngin:-63
#nmen:23 #noma:55 #nsta:18 #ntar:-19 #nted:23 #ntos:-40 #ntro:-19 #numb:49 #nume:24 #nvoi:-58 #nyth:21 #nywa:27
#obli:-40 #obra:40 #ocup:-23 #oice:-59 #oint:-20 #okin:32 #olla:37 #omas:54 #omor:24 #ompr:21 #onde:25 #oney:-75
#onge:-47 #ooki:37 #orks:19 #osit:22 #ossi:-18 #osto:83 #otal:86 #ough:53 #ould:98 #ound:-20 #ount:65 #oupo:47
#ouse:23 #over:50 #paid:-69 #para:64 #park:96 #peci:192 #pect:26 #pend:27 #pera:-23 #perd:-44 #pick:23 #plac:36
#plea:35 #podr:23 #poin:-20 #pons:59 #poss:-18 #ppre:-57 #prec:135 #pres:28 #pric:78 #pued:-65 #qued:-56 #quie:-35
#quit:-25 #quot:42 #raba:-31 #raci:32 #rake:40 #rand:-24 #rant:57 #raro:-66 #rati:104 #rato:-43 #rdan:-29 #rdar:-35
#rdid:-33 #read:-22 #reak:-18 #real:68 #reci:115 #recu:18 #refu:-63 #rena:-22 #repo:-31 #ress:-31 #revi:46 #rged:-66
#rgen:-30 #rgin:90 #rice:72 #righ:-27 #rios:28 #rito:31 #rive:-21 #robo:-28 #roke:-23 #rong:-38 #ront:32 #roug:22
#rque:-19 #rran:54 #rrow:24 #rvic:20 #sabe:26 #sale:-66 #sali:-34 #scou:82 #scue:76 #seri:46 #serv:19 #shop:-42
#sibl:-22 #sion:31 #spec:209 #sper:-73 #ssib:-18 #stad:-24 #stan:32 #star:28 #stee:32 #stil:46 #stim:150 #stop:-19
#suel:23 #supp:-23 #sure:18 #tado:-31 #take:-68 #talk:38 #tant:24 #tard:-87 #tart:18 #tell:75 #tera:19 #tery:27
#than:-70 #that:52 #them:-71 #thes:47 #this:-36 #thos:-20 #thou:20 #thur:20 #tiem:-57 #tigh:-22 #till:38 #tima:128
#time:-76 #toma:-51 #tomo:33 #tota:86 #trab:-36 #tran:-19 #trea:-22 #tura:-23 #twic:-27 #uand:-50 #uant:78 #ucho:-20
#ucks:-25 #ueda:-119 #uelt:20 #uent:74 #uest:35 #ueve:22 #uien:-23 #ulti:-23 #umbe:49 #umer:24 #unde:75 #unes:-21
#unte:-18 #uote:42 #upan:-35 #upon:48 #uran:-70 #urge:-29 #urio:41 #vale:50 #vece:-19 #vera:18 #vere:49 #vete:21
#vici:20 #visi:33 #voic:-59 #wait:26 #want:52 #warr:54 #what:134 #when:-83 #whic:-44 #wice:-27 #wifi:-53 #will:66
#with:49 #woul:71 #wron:-37 #ythi:25 #yway:27 %again_later:-23 %again_later%bring:22 %again_later%call_off:19
%again_later%how_long:50 %again_later%lift:-33 %again_later%money:-66 %again_later%on_way:-18 %again_later%pay_day:22
%again_later%start_again:29 %again_later%thanks:-22 %again_later%wrong_one:50 %agree:-36 %agree%bring:26
%agree%call_off:33 %agree%car:-23 %agree%doubt:35 %agree%fails:-21 %agree%gone_car:33 %agree%how_long:22
%agree%leave_me:18 %agree%money:108 %agree%phone:-23 %agree%place:-60 %agree%question:114 %agree%refuse:26
%agree%smoke_smell:-32 %agree%wrong_one:43 %away%bad:-18 %away%bring:-18 %away%call_off:21 %away%question:23
%away%refuse:28 %bad:-67 %bad%gone_car:-21 %bad%money:-34 %bad%question:-39 %bring:26 %bring%call_off:35
%bring%car_part:39 %bring%do_it:20 %bring%gone_car:18 %bring%money:43 %bring%question:63 %bring%refuse:-23
%bring%shift_it:-18 %bring%start_again:39 %busy:-25 %busy%car_part:26 %busy%refuse:-20 %call_off:-70
%call_off%car_part:-22 %call_off%money:28 %call_off%question:57 %call_off%thanks:39 %car%car_part:-23
%car%how_long:-21 %car%pay_day:21 %car%question:30 %car%refuse:-18 %car%wrong_one:28 %car_part:18 %car_part%do_it:79
%car_part%how_long:46 %car_part%money:98 %car_part%phone:27 %car_part%question:56 %car_part%shift_it:30
%car_part%start_again:21 %do_it:-47 %do_it%doubt:23 %do_it%gone_car:-20 %do_it%money:-33 %do_it%on_way:21
%do_it%question:42 %do_it%shift_it:59 %doubt:52 %doubt%elsewhere:22 %doubt%question:37 %elsewhere%money:-45
%elsewhere%pay_day:19 %elsewhere%place:19 %elsewhere%question:36 %elsewhere%refuse:22 %elsewhere%staff:-19 %fails:-47
%fails%how_long:-22 %fails%money:-19 %gone_car:-25 %gone_car%lift:-19 %gone_car%money:52 %gone_car%pay_day:40
%gone_car%question:26 %gone_car%refuse:30 %gone_car%shift_it:39 %how_long:-116 %how_long%lift:23 %how_long%money:-80
%how_long%on_way:-34 %how_long%question:-126 %how_long%wrong_one:34 %leave_me:-72 %leave_me%money:-30 %lift:-45
%lift%money:-19 %lift%question:-37 %lift%wrong_one:20 %machine%meaning:-19 %machine%money:25 %machine%question:-18
%meaning:-98 %meaning%money:33 %meaning%question:-65 %message:-51 %money:427 %money%on_way:49 %money%pay_day:-42
%money%phone:39 %money%place:-19 %money%question:251 %money%refuse:25 %money%shift_it:27 %money%smoke_smell:-34
%money%staff:-24 %money%start_again:19 %money%thanks:23 %money%wrong_one:55 %odometer:-38 %opening:-20 %pay_day:-23
%pay_day%question:19 %pay_day%wrong_one:31 %phone%wrong_one:20 %place:-26 %place%question:-85 %question:52
%question%refuse:91 %question%season:-18 %question%shift_it:75 %question%start_again:72 %question%thanks:44
%question%who:-73 %question%wrong_one:40 %refuse%shift_it:21 %refuse%start_again:20 %refuse%thanks:43
%refuse%wrong_one:-39 %shift_it%start_again:23 %smoke_smell:-64 %staff:-37 %staff%wrong_one:-28 %start_again:51
%thanks:-101 %who:-95 @?:135 @after_visit:-120 @car:50 @confirm:-42 @confirm_stop:-26 @later:20 @time:-29 @walk_in:26
^_a:75 ^_after:26 ^_any:94 ^_ballpark:76 ^_call:18 ^_can:50 ^_cant:-19 ^_como:-26 ^_con:30 ^_cost:35 ^_cuando:-22
^_cuanto:-137 ^_cuantos:-32 ^_depends:41 ^_do:73 ^_does:56 ^_el:-44 ^_en:-33 ^_esta:-47 ^_for:-23 ^_got:81 ^_hay:81
^_hello:-18 ^_how:-101 ^_i:-77 ^_is:148 ^_it:-34 ^_la:-32 ^_las:18 ^_later:28 ^_le:-34 ^_mas:24 ^_me:22 ^_monday:19
^_much:-91 ^_no:-42 ^_not:-56 ^_precio:52 ^_price:31 ^_que:35 ^_sale:-176 ^_salir:-45 ^_si:22 ^_sometime:21 ^_sure:27
^_thanks:-22 ^_that:-28 ^_the:-58 ^_tienen:39 ^_tomorrow:20 ^_too:-62 ^_we:-19 ^_what:-62 ^_when:-46 ^_which:-34
^_who:-32 ^_why:-81 ^_would:-24 ^_y:-44 ^_you:-103 a:121 a__filter:-23 a__first:27 a__for:93 a__la:25 a__lo:41
a__off:-21 a__on:20 a_bot:-26 a_brake:25 a_cabin:-23 a_como:144 a_las:-71 a_price:41 a_salir:20 a_ser:20 a_set:46
a_ver:24 about:-34 abran:-19 abran_$:-19 aceite:19 address:-19 afford:-20 afford_it:-19 after:22 again:18 ahi:-48
ahi_$:-38 algo:21 algun:35 alignment:30 all:42 all_$:31 all_day:-18 alla:-18 am:26 am_i:43 an:92 an__change:19
an_oil:19 and:162 and__are:-18 and__does:24 and__is:40 and__long:38 and__much:49 and_do:18 and_how:99 and_what:57
and_you:-31 anda:45 another:-22 antes_de:18 any:216 anything:21 anyway:27 anyway_$:27 are:55 are_$:-20 are__a:-23
are__talking:19 are_we:36 are_you:49 arm:23 at:54 at__it:18 at__place:18 at_is:20 at_it:21 at_the:-22 at_your:18
back_$:28 balatas:19 ballpark:99 ballpark_$:66 bank:-54 battery:27 be_$:94 be__to:-26 be_doing:-57 beat:23 before:33
before_i:18 bien:-36 big:-18 bill:-89 bill_$:18 bill_was:-22 bot:-26 bot_$:-26 both:28 brakes:29 break:-18 broke:-18
bucks:-25 but:-38 but__much:29 but_how:27 but_the:-23 by:-20 cabin:-26 cabin_filter:-23 cambio__aceite:24 can:64
can__get:55 can__give:18 can_i:28 can_you:35 cancelo:18 cant:-20 car:-28 cara:-18 caro_$:-32 change:25 changing:-47
charge:94 charge_$:21 charge_for:28 charged:-57 charged__for:-19 charged_me:-31 charging:90 cien:26 cien_$:25
cobran:79 cobran_por:49 cobraron:-68 cobraron__mas:-29 cobraron_de:-29 come:-37 come_$:-25 como_$:33 como_cuanto:-82
como_la:20 como_lo:28 con:26 cosa:-20 cost:211 cost_$:105 costo:83 could:25 could_you:28 covered:50 cuando:-49
cuanto:80 cuanto_$:37 cuanto__a:24 cuanto__el:33 cuanto__me:-120 cuanto__para:20 cuanto__por:22 cuanto__tardan:-38
cuanto__y:96 cuanto_anda:25 cuanto_cobran:18 cuanto_cuesta:37 cuanto_demora:-36 cuanto_dura:-26 cuanto_es:70
cuanto_por:77 cuanto_rato:-61 cuanto_sale:34 cuanto_se:-148 cuanto_seria:56 cuanto_tiempo:-79 cuanto_va:21
cuanto_vale:58 cuantos:-40 cuesta:23 cuesta_$:22 cuesta_y:19 da:114 damage:23 dan:40 dar:29 day_$:-21 days:54
days_$:59 de:108 de__como:25 de__de:32 de_a:25 de_aceite:21 de_las:26 de_mas:-31 deal:-31 demora:-37 demora_$:-36
depends:41 descuento:66 dia:-28 dias:-39 dice:31 did:-45 did_it:-18 did_my:-45 did_that:19 digame:50 digame_cuanto:22
dime:25 dinero:-60 dinero_$:-30 discount:47 do:47 do_$:-58 do__charge:63 do__get:37 do__go:26 do__guys:46
do__need:-39 do__take:-47 do__use:-20 do_i:49 do_you:58 does__cost:28 doing:-65 doing_$:-28 doing__it:-28
doing_to:-28 dollars:39 donde:32 donde_estan:65 done:-20 down:-25 drive:-18 due:-20 dura:-19 el:82 el__a:-31
el__cuanto:26 el__de:33 el__para:39 el_cambio:27 el_costo:51 el_dinero:-22 el_martes:-18 el_precio:74 el_servicio:23
el_total:41 en:25 en__anda:25 en__me:41 en_cuanto:35 en_el:-21 entro:-18 era:39 era_$:23 es:59 es_$:32 es_gratis:94
es_un:-33 es_y:37 eso:-22 esperar:-19 esperar_$:-19 espero:-47 espero_$:-45 esta:-39 esta__caro:-22 estan:32
estimado:82 estimate:69 ever:20 factura:-18 favor_y:-19 fee:51 feel:-18 feria:-20 figure:48 filter:-29 first:28
first_$:28 fix:22 fluid:-26 for:56 for_$:-66 for_a:52 for_free:-22 for_me:-35 for_the:52 for_these:35 for_this:27
for_what:-37 four:21 free:156 free_$:153 frenar:-21 frenar_$:-21 from:-63 from_the:-41 front:34 fue:-26 get:30
get__a:34 get_a:42 get_paid:-35 give:27 give_me:30 go:20 go_for:69 going:79 going__cost:22 going_on:34 going_to:54
got:20 got__wait:19 got_any:59 got_to:29 gracias:34 gratis:105 gratis_$:83 guys:27 hablan:-18 hace:20 have:24 hay:121
hello:-18 high:-25 house:23 how:214 how__and:45 how__for:37 how__i:-19 how__is:62 how__it:-26 how__time:-68
how__to:31 how__was:43 how__we:28 how__would:24 how_do:-27 how_is:-24 how_many:26 how_much:340 humo:-18 i__a:21
i__an:19 i__for:28 i__it:-27 i__paid:-37 i__the:18 i__to:28 i_bring:22 i_can:18 i_need:-18 i_owe:32 i_pay:22
i_was:-32 idea:33 im:-39 im_not:-19 in_$:-19 inspection:19 invoice:-58 invoice_$:-38 ir:25 is:-29 is__a:22
is__address:-18 is__cost:31 is__damage:23 is__do:-40 is__for:-54 is__free:131 is__going:32 is__oil:21 is__on:-40
is__price:36 is__really:56 is__still:53 is__total:23 is_a:-18 is_an:36 is_it:92 is_on:-21 is_that:58 is_the:77
is_there:64 is_this:-49 is_tight:-21 is_too:-22 is_wrong:-26 it:72 it_$:-35 it__free:30 it__like:20 it__or:34
it__to:-27 it__under:89 it_a:-38 it_be:43 it_cost:61 it_for:-55 it_is:-37 it_really:42 it_still:56 just:49 la:-22
la_cara:-18 la_factura:-18 la_otra:34 la_ultima:-21 labor:119 labor_$:94 las_$:-49 las_dos:26 later:18 later_one:19
le:-70 le_sale:-23 left:-66 left_on:-46 les:-49 life:-46 lleva:-18 lo:-53 lo__que:27 lo_dan:26 lo_mismo:25 lo_que:-41
long_$:47 longer:-45 look:20 look_at:34 looking:41 looking_at:32 lunch:20 lunes:-21 mandan:-21 mano:19 many:26
mas:-65 mas_$:-42 mas__menos:31 mas_de:31 mas_o:31 me:26 me_$:27 me__a:49 me__cuanto:30 me__dar:29 me__de:-35
me__muy:21 me__que:-34 me__un:70 me__una:45 me_back:43 me_cobran:29 me_cobraron:-67 me_da:119 me_dice:32
me_espero:-45 me_for:-27 me_hace:19 me_lo:-37 me_sale:36 me_the:41 me_tienen:-20 me_van:22 me_with:36 mean:-22
mean_$:-18 menos:38 mismo:27 money:-74 money_$:-49 money__tight:-21 money_is:-21 more:-36 much:182 much_$:56
much__how:48 much__i:33 much__it:128 much__the:38 much_and:46 much_for:41 much_is:117 much_time:-68 much_to:36
much_would:34 mucho:-19 must:-35 muy:-45 muy_caro:-46 my:-52 my__go:-45 my__in:23 my__is:-58 my_warranty:46 n:19
need:-31 need_$:-43 need_a:30 new:18 no:27 no__el:19 no__is:-60 no_but:20 no_me:23 no_thanks:37 no_what:-44 nomas:55
not:-84 not_at:-34 now:-67 now_$:-65 number:52 number_$:33 o:42 o_menos:31 obra:20 of:26 of_my:-36 of_the:35 off:-49
off_$:-46 oil_change:28 ok:-29 ok__it:18 ok_but:-23 ok_is:20 on_$:43 one__much:31 or:94 or__i:21 out:20 out_of:24
owe:-26 paid:-63 paid_$:-33 para:62 para_el:18 pay_$:37 perdida:-33 perdida_total:-33 pero:47 pero__el:20
pero_cuanto:18 pick:23 pick__up:18 place:45 please:38 please_$:28 por:176 precio:205 precio_$:62 precio_y:27
price:169 price_$:81 price_on:23 prices:-34 pueda:-52 que:-70 que_es:-20 que_la:21 que_precio:43 que_tan:41
que_tanto:28 queda:-65 queda_$:-60 quien:-31 quote:43 quote_$:-59 rate:19 rato:-63 rato_me:-42 really:61 refund:-59
refund_$:-50 remind:21 remind_me:21 right:-23 right_now:-29 robo:-21 rough:26 run:231 run_$:170 run_me:50 saber:24
sale:-69 salir:-32 salir_$:-29 se:-184 se_lleva:-18 se_queda:-20 se_tardan:-38 send_me:25 seria:59 seria_$:31
servicio:20 set:83 set__back:45 set_me:45 set_of:46 shop:-41 si:43 so:-29 so_i:24 so_much:-38 sometime:21 still:55
sure:27 take:-64 talkin:22 talkin_$:22 talking:23 tan:42 tan__es:43 tanto:26 tarda:-20 tardan:-39 tardan_$:-37 tax:53
tax_$:57 te:-19 tell:68 tell_me:47 tempranito:19 than:-62 thank:-19 thank__so:-19 thank_you:-18 that:52 that_$:-103
that__to:32 that_is:-32 the:79 the__and:26 the__going:21 the__one:20 the__was:-36 the_bill:24 the_cost:18
the_damage:23 the_front:19 the_house:23 the_quote:-81 the_tires:-34 the_total:26 them:-71 them_$:-72 there:39
there_$:-24 there_a:62 these:47 these_days:58 thing:-44 this:-36 those:-20 though:23 though_$:19 thursday_and:27
tiempo:-57 tight:-22 time:-97 time__it:-28 time__you:-49 time_do:-53 tires_$:-22 to:40 to_$:23 to__a:26 to__at:36
to__for:-33 to__me:38 to__my:20 to_cost:22 to_fix:28 to_it:-28 to_look:38 to_pay:-18 to_set:26 to_wait:19 toma:-42
toma_$:-29 tomorrow:24 too:-138 too__for:-48 too_much:-61 total:89 trabajo:-18 tread:-21 tuesday__is:19 tuesday_at:19
twice:-27 twice_$:-26 ultima:-22 un:64 una:41 under:76 up:37 up_$:39 up__me:19 urgent:-21 urgent_$:-20 va:37
va__ser:19 va_a:35 vale:55 veces:-19 want:19 warranty:54 was:-44 was_it:39 way:19 we:18 we_talkin:22 we_talking:26
what:135 what_$:-57 what__i:86 what__is:-51 what__it:-51 what__that:49 what__the:88 what__this:-19 what__you:85
what_a:-23 what_am:42 what_are:90 what_do:95 what_i:-26 what_time:-24 what_will:23 what_would:131 what_you:24
when:-81 when__get:-35 when_i:-46 which:-43 who:-42 who_is:-19 why:-78 why_$:-23 wifi:-53 wifi_$:-38 will:66
will__be:38 will_it:56 wise_$:28 with:51 with_a:36 works:20 would:65 would_be:-34 would_that:59 would_the:37
would_you:-43 wrong:-37 y:221 y__a:31 y__por:32 y_como:-44 y_cuanto:66 y_de:22 y_donde:52 y_en:21 y_si:23 yes_$:-38
yes__how:26 yes__it:47 yes__much:20 yes__the:-24 yes_but:-19 yes_how:20 yet:23 yet_$:23 you:-57 you_$:-20
you__bot:-25 you__for:73 you__have:45 you__it:32 you__much:-26 you__my:-19 you__the:-19 you_a:-26 you_are:-21
you_be:-56 you_charge:73 you_charged:-23 you_guys:31 you_need:-45 you_so:-19 you_take:-47 you_want:26
"""
