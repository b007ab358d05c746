"""What speaks for and against `price`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "price"
BIAS = -186
WEIGHTS = """\
#abaj:-43 #aber:27 #abin:-31 #abla:-14 #able:-15 #abor:134 #abou:-41 #abra:-26 #acei:22 #acer:-26 #acia:25 #acio:58
#actu:-19 #addr:-21 #affo:-23 #afte:38 #agai:20 #ague:-18 #ahea:20 #ahor:30 #akes:28 #alat:22 #alca:57 #ales:74
#algo:30 #algu:49 #alig:25 #alir:-38 #alki:46 #alla:-22 #allp:116 #ally:65 #alta:-20 #amag:19 #ance:38 #anda:22
#ando:-43 #ange:39 #angi:-58 #anit:22 #anme:14 #anot:-20 #anta:26 #ante:33 #anto:117 #anty:58 #anyt:20 #anyw:31
#anza:49 #aper:20 #appr:-62 #arat:26 #arch:16 #arda:-109 #arde:17 #arge:30 #argi:99 #argo:28 #arms:14 #aron:-102
#arqu:-15 #arra:55 #arts:14 #ason:15 #asta:-26 #asti:-23 #atan:-44 #atas:22 #atch:47 #ated:-65 #ater:30 #atis:118
#atro:14 #aunq:16 #auto:-14 #avin:16 #avor:-23 #back:16 #baje:-17 #bajo:-28 #bala:24 #ball:115 #bank:-59 #batt:30
#beat:28 #been:-16 #befo:48 #bien:-40 #bill:-110 #blan:-34 #blig:-40 #body:-21 #boni:-18 #both:32 #bott:17 #bout:-46
#brak:44 #bran:49 #brar:-69 #brea:-21 #brok:-28 #buck:-26 #cabi:-31 #cali:21 #came:-14 #canc:39 #cant:-23 #canz:49
#cara:-20 #care:-14 #carg:23 #ceit:22 #cela:15 #celo:21 #cerl:-15 #chan:-38 #char:134 #chea:19 #chec:19 #chis:-17
#cial:198 #cias:39 #ciat:-67 #cien:25 #cier:-31 #cina:16 #cion:76 #cobr:29 #cole:15 #come:-36 #como:20 #cosa:-17
#cost:343 #coul:24 #coun:70 #coup:48 #cove:70 #crap:16 #craz:-14 #ctio:14 #ctur:-20 #cuan:21 #cuat:15 #cuen:82
#cuer:30 #cues:30 #cupa:-41 #curi:47 #dama:19 #dari:-16 #days:73 #ddre:-21 #deal:-26 #deci:17 #deja:23 #deje:-24
#dejo:-14 #deme:29 #demo:-56 #depe:41 #desc:87 #dias:-45 #dice:31 #dici:18 #dida:-38 #diga:82 #dije:-17 #dila:-60
#dime:28 #dine:-69 #disc:90 #dnes:-16 #doin:-73 #doll:42 #dond:36 #done:-22 #down:-30 #dred:14 #dres:-32 #dria:24
#driv:-27 #dura:-98 #each:-18 #eale:-17 #eall:68 #eals:35 #ease:34 #easo:15 #ebaj:28 #eces:-22 #echa:20 #ecia:130
#ecib:-16 #ecio:226 #ecti:25 #ecue:21 #edne:-16 #efor:48 #efun:-65 #egun:-17 #eite:22 #ejan:17 #ejem:-15 #ejor:-17
#elar:16 #emad:-14 #emin:20 #emor:-53 #empo:-67 #empr:25 #enan:15 #enar:-25 #ends:46 #enen:-26 #enga:-19 #engi:-15
#enos:49 #enta:-27 #ente:-22 #ento:79 #entr:-41 #epen:41 #eran:25 #erar:-23 #eras:16 #erco:18 #erdi:-40 #ered:56
#eren:-14 #eria:39 #erlo:-20 #eron:-41 #erso:-20 #erta:17 #ervi:22 #escu:83 #esda:-18 #espa:-17 #esta:16 #este:-16
#esti:159 #esto:-19 #eter:29 #etic:34 #etim:24 #evar:18 #even:-14 #eves:21 #evis:51 #expe:24 #fact:-19 #falt:-20
#favo:-23 #feel:-24 #feri:-23 #ffor:-19 #figu:54 #filt:-33 #firs:27 #flui:-30 #ford:-23 #fore:48 #foun:-15 #four:24
#free:152 #fren:-32 #from:-71 #fron:38 #fter:38 #fund:-66 #gain:20 #game:65 #gana:-15 #ganm:16 #gast:-57 #gent:-35
#gine:-15 #ging:40 #give:28 #gnme:25 #goes:18 #goin:83 #grac:38 #gran:-17 #grat:118 #gure:54 #guys:26 #habl:-17
#hang:-28 #happ:-18 #harg:129 #have:20 #head:26 #heap:19 #hell:-18 #here:32 #hese:54 #hich:-49 #hici:-16 #high:-81
#hing:-15 #hitc:17 #hold:17 #hora:34 #hose:-26 #houg:25 #hous:25 #humo:-22 #hurs:24 #iado:-16 #iate:-67 #ible:-25
#ices:-39 #icio:35 #icks:17 #idad:23 #idea:36 #iemp:-50 #ient:-16 #iera:15 #ierc:15 #iere:-16 #ieve:-17 #igam:56
#igan:19 #ight:-62 #ignm:25 #igur:54 #ijer:-17 #ilat:-60 #ilte:-38 #imad:93 #imat:78 #iner:-69 #insp:18 #inte:33
#inut:-17 #invo:-75 #iosi:33 #ippe:-16 #ires:15 #irst:27 #isar:16 #isco:95 #isio:38 #ismo:32 #itch:15 #jero:-17
#juev:21 #just:55 #king:49 #labo:134 #lace:50 #lado:20 #lanc:-19 #lant:24 #lars:44 #lata:-43 #lcan:57 #leas:30
#left:-72 #levo:19 #lgun:39 #lies:-20 #life:-50 #lige:-36 #lign:25 #like:14 #line:30 #liqu:15 #live:-15 #lkin:46
#llam:14 #llan:23 #llar:42 #llas:-15 #lleg:-15 #llpa:116 #loca:15 #long:-36 #look:67 #lpar:116 #lter:-38 #ltim:-27
#luid:-30 #lunc:23 #lune:-23 #mado:79 #mage:18 #make:-14 #mall:-17 #mano:23 #many:30 #marq:-15 #mate:74 #matt:-18
#mber:54 #mbio:14 #mean:-29 #mejo:-17 #meno:44 #meti:27 #mien:20 #mier:15 #mine:17 #minu:-17 #mism:31 #mone:-85
#mont:-14 #mora:-52 #more:-42 #morr:28 #mpre:34 #much:214 #must:-40 #nanc:14 #ncel:31 #ndan:-19 #nder:78 #ndic:20
#need:-35 #nero:-66 #nesd:-16 #neve:-16 #news:15 #ngan:-14 #nger:-56 #ngin:-74 #nine:-14 #nmen:25 #noma:61 #noon:17
#nque:16 #nspe:18 #nsta:21 #ntar:-20 #nted:28 #nten:16 #ntit:15 #ntos:-46 #ntre:-18 #ntro:-22 #numb:56 #nume:28
#nuto:-15 #nvoi:-65 #nyth:22 #nywa:32 #obli:-40 #obra:51 #obro:-18 #ocke:-16 #ocup:-27 #odri:18 #oice:-65 #oiga:14
#oint:-24 #okin:34 #olla:42 #omas:60 #omet:14 #omor:28 #ompr:24 #onde:27 #oney:-85 #onge:-53 #onit:-18 #onth:-14
#ooki:40 #open:-15 #orks:22 #orra:18 #orro:18 #osit:27 #ossi:-19 #osta:15 #osto:94 #otal:96 #otra:17 #otto:17
#ough:60 #ould:108 #ound:-22 #ount:69 #oupo:51 #ouse:27 #over:59 #pads:16 #pago:-19 #pagu:-17 #paid:-82 #para:70
#park:113 #part:14 #pass:-17 #peci:204 #pect:29 #pend:33 #pent:-17 #pera:-26 #perd:-50 #pick:27 #plac:41 #plea:33
#podr:26 #poin:-23 #pong:15 #pons:65 #poss:-20 #pped:-18 #ppre:-60 #prec:153 #pres:33 #pric:93 #prim:16 #pued:-71
#qued:-64 #quic:-19 #quie:-39 #quir:14 #quit:-28 #quot:47 #raba:-36 #raci:36 #rake:45 #rand:-28 #rang:15 #rani:20
#rant:62 #raro:-70 #rate:14 #rati:118 #rato:-47 #razy:-14 #rcha:14 #rcol:15 #rdad:-14 #rdan:-34 #rdar:-41 #rdid:-37
#read:-25 #reak:-21 #real:74 #rech:18 #reci:130 #reco:-18 #recu:21 #refu:-70 #remi:20 #rena:-23 #repo:-34 #reso:14
#ress:-35 #resu:14 #revi:51 #rged:-72 #rgen:-34 #rgin:99 #rice:87 #righ:-29 #rios:31 #ripp:-14 #rito:36 #rive:-25
#robo:-32 #roke:-28 #rong:-42 #ront:35 #room:-14 #roug:26 #rque:-22 #rran:58 #rrow:28 #rson:-20 #rter:17 #runs:18
#rvic:22 #sabe:29 #saca:-14 #sada:18 #said:15 #sale:-64 #sali:-39 #savi:17 #scou:90 #scra:15 #scue:84 #seas:15
#seda:17 #sell:15 #send:14 #seri:55 #serv:22 #shop:-49 #sibl:-24 #sida:17 #siem:17 #sion:35 #sito:17 #skip:-19
#snow:-14 #sons:19 #spec:222 #spen:-19 #sper:-83 #ssib:-19 #stad:-28 #stal:19 #stan:36 #star:31 #sted:-20 #stee:39
#stil:53 #stim:164 #stop:-21 #stoy:-17 #suel:26 #supp:-27 #supu:15 #sure:21 #tado:-36 #take:-74 #talk:38 #tant:28
#tard:-102 #tart:19 #tell:87 #tena:14 #tera:22 #tery:30 #than:-81 #that:51 #them:-78 #ther:16 #thes:54 #thin:-18
#this:-40 #thos:-20 #thou:22 #thur:20 #tico:14 #tiem:-67 #tien:-16 #tigh:-29 #till:43 #tima:139 #time:-81 #tito:15
#toda:-19 #toma:-60 #tomo:39 #took:-16 #tota:96 #trab:-42 #tran:-23 #trea:-25 #truc:14 #ttom:17 #tura:-25 #twic:-30
#uand:-57 #uant:104 #uatr:15 #ucho:-23 #ucks:-26 #uebl:15 #ueda:-136 #uelt:24 #uent:82 #uerd:18 #uest:42 #ueve:28
#ught:-14 #uick:-19 #uien:-26 #uita:-20 #ulti:-27 #umbe:56 #umer:28 #unch:19 #unde:81 #unes:-23 #unqu:16 #unte:-22
#uote:47 #upan:-40 #upon:51 #upue:15 #uran:-81 #urge:-32 #urio:46 #usan:-15 #used:-17 #uste:-19 #vale:56 #vece:-21
#vemo:15 #vend:15 #vera:19 #verd:-14 #vere:56 #very:-21 #vete:24 #vici:23 #vida:-17 #visi:37 #voic:-65 #vuel:-16
#wait:31 #want:61 #warr:58 #wedn:-16 #week:-15 #what:140 #when:-93 #whic:-48 #wice:-30 #wifi:-60 #will:72 #wise:15
#with:52 #word:-16 #work:15 #woul:77 #wron:-42 #yeah:15 #your:-15 #ythi:27 #yway:32 %again_later:-23
%again_later%agree:-19 %again_later%away:15 %again_later%bring:22 %again_later%call_off:18 %again_later%car_part:-18
%again_later%do_it:16 %again_later%doubt:15 %again_later%elsewhere:-14 %again_later%how_long:60 %again_later%lift:-36
%again_later%money:-72 %again_later%on_way:-21 %again_later%pay_day:27 %again_later%place:16 %again_later%refuse:16
%again_later%season:17 %again_later%shift_it:18 %again_later%smoke_smell:-15 %again_later%start_again:30
%again_later%thanks:-24 %again_later%wrong_one:56 %agree:-44 %agree%away:-18 %agree%bad:18 %agree%bring:29
%agree%call_off:29 %agree%car:-27 %agree%do_it:14 %agree%doubt:40 %agree%fails:-24 %agree%gone_car:37
%agree%how_long:26 %agree%leave_me:21 %agree%machine:15 %agree%money:129 %agree%phone:-32 %agree%place:-72
%agree%question:130 %agree%refuse:25 %agree%shift_it:-15 %agree%smoke_smell:-38 %agree%staff:-14 %agree%wrong_one:42
%away:17 %away%bad:-21 %away%bring:-20 %away%call_off:23 %away%car_part:19 %away%lift:16 %away%question:27
%away%refuse:32 %away%start_again:15 %bad:-77 %bad%do_it:-15 %bad%elsewhere:15 %bad%gone_car:-24 %bad%meaning:20
%bad%money:-40 %bad%question:-45 %bad%shift_it:15 %bring:27 %bring%call_off:36 %bring%car_part:44 %bring%do_it:23
%bring%gone_car:21 %bring%money:52 %bring%question:72 %bring%refuse:-28 %bring%shift_it:-24 %bring%start_again:41
%busy:-27 %busy%call_off:-18 %busy%car_part:30 %busy%do_it:15 %busy%elsewhere:14 %busy%money:-18 %busy%refuse:-21
%call_off:-81 %call_off%car_part:-30 %call_off%money:40 %call_off%question:62 %call_off%thanks:45 %car:-18
%car%car_part:-28 %car%family:14 %car%gone_car:17 %car%how_long:-24 %car%on_way:-18 %car%pay_day:26 %car%question:33
%car%refuse:-23 %car%shift_it:16 %car%wrong_one:32 %car_part:20 %car_part%do_it:87 %car_part%gone_car:16
%car_part%how_long:52 %car_part%money:111 %car_part%opening:19 %car_part%phone:31 %car_part%question:66
%car_part%shift_it:34 %car_part%start_again:22 %car_part%wrong_one:17 %do_it:-61 %do_it%doubt:27 %do_it%gone_car:-22
%do_it%leave_me:14 %do_it%money:-38 %do_it%odometer:20 %do_it%on_way:25 %do_it%opening:17 %do_it%place:14
%do_it%question:45 %do_it%refuse:-15 %do_it%season:-16 %do_it%shift_it:65 %do_it%start_again:-18 %doubt:60
%doubt%elsewhere:24 %doubt%question:42 %doubt%shift_it:16 %elsewhere%gone_car:14 %elsewhere%money:-52
%elsewhere%pay_day:21 %elsewhere%place:21 %elsewhere%question:40 %elsewhere%refuse:24 %elsewhere%shift_it:-14
%elsewhere%staff:-22 %fails:-52 %fails%how_long:-25 %fails%money:-21 %fails%question:20 %fails%smoke_smell:-15
%family:-16 %family%odometer:17 %family%question:15 %gone_car:-24 %gone_car%lift:-22 %gone_car%money:61
%gone_car%on_way:-15 %gone_car%pay_day:46 %gone_car%question:31 %gone_car%refuse:35 %gone_car%shift_it:43
%how_long:-137 %how_long%lift:27 %how_long%money:-99 %how_long%on_way:-37 %how_long%pay_day:19
%how_long%question:-149 %how_long%shift_it:-20 %how_long%wrong_one:38 %leave_me:-80 %leave_me%money:-36 %lift:-51
%lift%money:-20 %lift%pay_day:19 %lift%question:-41 %lift%refuse:19 %lift%wrong_one:24 %machine%meaning:-22
%machine%money:29 %machine%on_way:18 %machine%question:-21 %machine%staff:-21 %meaning:-113 %meaning%money:39
%meaning%phone:15 %meaning%question:-76 %meaning%shift_it:19 %message:-56 %money:539 %money%on_way:54
%money%opening:15 %money%pay_day:-44 %money%phone:41 %money%place:-27 %money%question:288 %money%refuse:32
%money%season:17 %money%shift_it:32 %money%smoke_smell:-40 %money%staff:-28 %money%start_again:21 %money%thanks:24
%money%wrong_one:56 %noise:-14 %odometer:-42 %on_way%shift_it:-20 %on_way%start_again:-14 %opening:-24
%opening%shift_it:17 %pay_day:-25 %pay_day%question:22 %pay_day%shift_it:20 %pay_day%wrong_one:36 %phone%refuse:-17
%phone%staff:-21 %phone%wrong_one:20 %place:-31 %place%question:-99 %place%shift_it:14 %question:71
%question%refuse:104 %question%season:-23 %question%shift_it:83 %question%smoke_smell:-19 %question%start_again:77
%question%thanks:50 %question%who:-81 %question%wrong_one:42 %refuse%shift_it:21 %refuse%staff:-14
%refuse%start_again:21 %refuse%thanks:50 %refuse%wrong_one:-45 %season:-20 %shift_it:15 %shift_it%start_again:25
%shift_it%thanks:-16 %smoke_smell:-74 %staff:-49 %staff%wrong_one:-34 %start_again:54 %thanks:-108 %who:-107 @?:181
@after_visit:-126 @car:59 @confirm:-43 @confirm_stop:-29 @later:20 @odometer:-21 @reading:17 @time:-31 @times:20
^_a:87 ^_after:30 ^_ahi:14 ^_all:18 ^_anda:16 ^_antes:16 ^_any:94 ^_ballpark:91 ^_call:20 ^_can:47 ^_cant:-21
^_como:-27 ^_con:36 ^_cost:38 ^_cuando:-25 ^_cuanto:-150 ^_cuantos:-37 ^_depends:47 ^_do:73 ^_does:64 ^_el:-49
^_en:-35 ^_esta:-54 ^_for:-28 ^_free:-14 ^_give:19 ^_got:87 ^_hay:86 ^_hello:-18 ^_hold:18 ^_how:-122 ^_i:-86
^_im:-14 ^_is:157 ^_it:-37 ^_jueves:15 ^_la:-36 ^_las:22 ^_later:33 ^_le:-37 ^_lo:-15 ^_mas:30 ^_me:30 ^_monday:20
^_much:-93 ^_muy:-18 ^_no:-38 ^_not:-61 ^_oh:-17 ^_phone:15 ^_por:-17 ^_precio:59 ^_price:35 ^_que:42 ^_quien:-17
^_quisiera:19 ^_sale:-200 ^_salir:-52 ^_sedan:18 ^_si:20 ^_sometime:25 ^_sure:32 ^_te:-14 ^_thank:-22 ^_thanks:-25
^_that:-28 ^_the:-65 ^_thurs:18 ^_tienen:42 ^_tomorrow:24 ^_too:-64 ^_tuesday:15 ^_we:-21 ^_wed:16 ^_what:-83
^_when:-53 ^_which:-37 ^_who:-36 ^_why:-91 ^_will:14 ^_would:-26 ^_y:-54 ^_yeah:15 ^_yes:19 ^_you:-118 a:121
a__filter:-27 a__first:27 a__for:105 a__job:16 a__la:30 a__lo:48 a__of:16 a__off:-24 a__on:22 a__thing:-18 a__y:17
a_bot:-26 a_brake:29 a_cabin:-28 a_como:166 a_las:-79 a_loaner:16 a_price:43 a_rip:-18 a_salir:24 a_ser:22 a_set:52
a_ver:28 about:-40 about_$:-15 about_a:-15 abran:-22 abran_$:-21 aceite:22 address:-21 address_$:-16 afford:-23
afford_it:-22 after:26 again:21 ahead:20 ahi:-54 ahi_$:-45 ahora:17 al__y:19 algo:24 algun:39 alignment:34 all:49
all_$:37 all_day:-21 alla:-22 alla_$:-18 am:29 am_i:48 an:100 an__change:22 an_oil:21 and:176 and__are:-20
and__does:27 and__i:20 and__is:46 and__long:42 and__many:16 and__much:56 and__you:17 and_a:18 and_do:21 and_how:112
and_tell:17 and_what:63 and_you:-34 anda:54 ando:-18 another:-23 antes_de:20 any:222 anything:22 anyway:32
anyway_$:32 are:62 are_$:-22 are__a:-23 are__at:16 are__talking:21 are_we:37 are_you:57 arm:26 ask:-14 at:62
at__it:23 at__place:19 at_a:15 at_is:24 at_it:22 at_the:-27 at_your:19 aunque:16 back_$:29 baje:-17 baje_la:-17
balatas:22 ballpark:116 ballpark_$:80 bank:-59 battery:30 be_$:101 be__to:-29 be_a:-15 be_doing:-64 beat:28 been:-16
before:37 before_i:20 bien:-43 big:-21 bill:-98 bill_$:22 bill_was:-25 bonito:-18 bot:-26 bot_$:-26 both:32 bottom:17
brake_job:15 brakes:31 brakes_$:18 brand:-15 break:-21 broke:-21 bucks:-26 but:-42 but__much:33 but_how:31
but_the:-25 by:-22 cabin:-31 cabin_filter:-28 cae:-18 call_me:15 cambio:14 cambio__aceite:27 cambio_de:18 can:64
can__get:57 can__give:19 can__with:-14 can_i:24 can_you:40 cancelar:16 cancelar_$:17 cancelo:21 cant:-23 cant__it:-18
car:-32 cara:-20 caro_$:-27 change:28 changing:-55 charge:105 charge_$:23 charge_for:32 charged:-63 charged__for:-22
charged_me:-36 charging:99 cien:30 cien_$:30 cobran:86 cobran_$:-17 cobran_por:55 cobraron:-72 cobraron__mas:-31
cobraron_de:-31 cobro:-18 come:-38 come_$:-25 como:18 como_$:37 como__se:-18 como_cuanto:-94 como_la:23 como_lo:33
con:32 con_el:-15 cosa:-23 cost:234 cost_$:115 cost_me:14 costo:94 could:28 could_you:32 count:-14 count_me:-14
coupon:-15 covered:56 crazy:-14 cuando:-57 cuanto:105 cuanto_$:44 cuanto__a:28 cuanto__el:37 cuanto__la:-14
cuanto__lo:20 cuanto__los:14 cuanto__me:-137 cuanto__para:23 cuanto__por:26 cuanto__tardan:-44 cuanto__y:110
cuanto_anda:30 cuanto_cobran:20 cuanto_cuesta:43 cuanto_demora:-43 cuanto_dura:-29 cuanto_es:78 cuanto_me:18
cuanto_por:90 cuanto_rato:-70 cuanto_sale:40 cuanto_se:-168 cuanto_seria:67 cuanto_tarda:-16 cuanto_tardan:-16
cuanto_tiempo:-92 cuanto_va:25 cuanto_vale:66 cuantos:-46 cuatro:15 cuesta:29 cuesta_$:25 cuesta__cuanto:19
cuesta_y:24 da:123 dad:15 damage:26 dan:47 dar:32 day:-16 day_$:-23 days:63 days_$:68 de:125 de__como:27 de__de:39
de__otra:16 de_a:27 de_aceite:24 de_la:-16 de_las:31 de_mas:-33 de_que:-17 deal:-35 dealer:-16 deja:22 dejan:19
dejo:-14 del:-20 demora:-45 demora_$:-43 depends:47 descuento:73 dia:-32 dia_$:-17 dias:-45 dice:35 did:-54
did__get:-17 did_it:-24 did_my:-52 did_that:22 diga:14 digame:56 digame_cuanto:25 dijeron:-17 dime:28 dinero:-71
dinero_$:-35 discount:53 do:42 do_$:-66 do__charge:69 do__get:42 do__go:31 do__guys:48 do__need:-42 do__take:-51
do__use:-24 do_i:54 do_you:59 does__cost:32 does_that:-17 doing:-73 doing_$:-31 doing__it:-31 doing_to:-31 dollars:45
donde:36 donde_estan:75 done:-22 done_$:-14 dos:14 dos_veces:-18 down:-28 drive:-21 drive_$:-15 due:-23 dura:-21
each:-16 el:88 el__a:-35 el__cuanto:30 el__de:38 el__para:44 el__tempranito:16 el_cambio:30 el_costo:56 el_dinero:-25
el_lunes:-16 el_martes:-21 el_otro:17 el_precio:82 el_servicio:26 el_total:45 en:35 en__anda:30 en__me:49 en__sale:19
en_cuanto:44 en_el:-24 en_que:15 engine:-15 entro:-21 era:45 era_$:27 es:72 es_$:37 es__mismo:19 es_de:-20 es_eso:-17
es_gratis:109 es_que:-18 es_un:-39 es_y:43 eso:-23 esperar:-22 esperar_$:-22 espero:-53 espero_$:-51 esta:-45
esta__caro:-27 estan:36 estimado:86 estimate:78 estoy:-17 even__a:-15 even_is:-15 ever:24 factura:-19 falta:-19
falta_$:-17 favor:-22 favor_y:-22 fee:58 feel:-21 feria:-23 figure:54 filter:-34 first:27 first_$:27 fix:22 fluid:-29
flush_$:-15 for:64 for_$:-70 for__brakes:14 for__i:-16 for__in:17 for__lol:15 for__of:-16 for_a:56 for_brakes:14
for_free:-30 for_me:-34 for_the:59 for_these:41 for_this:31 for_what:-43 found:-15 four:24 free:161 free_$:168
frenar:-22 frenar_$:-22 friday_$:-19 from:-71 from_the:-46 front:38 front_end:15 fue:-29 get:26 get__a:39 get_a:42
get_paid:-41 give:28 give_me:32 go:26 go_for:81 goes:18 going:83 going__cost:24 going_on:36 going_to:58 got:15
got__wait:23 got_a:-17 got_any:62 got_it:-18 got_to:34 gracias:39 gracias__me:16 gracias_y:20 gratis:118 gratis_$:95
guys:26 hablan:-21 hace:23 hacerlo:-15 hacerlo_$:-15 have:20 have_to:16 hay:133 hello:-18 hicieron:-16 high:-27
hitch:17 hold:18 hold_off:17 hora_de:20 house:27 house_$:17 how:244 how__and:51 how__for:38 how__i:-21 how__is:71
how__it:-28 how__time:-75 how__to:33 how__was:50 how__we:29 how__would:26 how__you:-16 how_do:-30 how_is:-27
how_many:30 how_much:375 humo:-22 hundred:14 i:-20 i__a:19 i__an:21 i__for:32 i__it:-32 i__paid:-44 i__the:20
i__to:31 i_bring:26 i_can:20 i_need:-20 i_owe:36 i_paid:-20 i_pay:25 i_skip:-14 i_was:-33 idea:37 if__skip:-14
if_you:15 ill:15 ill__a:17 ill_need:17 im:-44 im_not:-20 in_$:-22 in_the:-14 inspection:21 interest:14 invoice:-65
invoice_$:-42 ir:26 is:-30 is_$:-18 is__a:24 is__about:-15 is__address:-20 is__alignment:14 is__brake:17
is__cabin:-14 is__cost:35 is__damage:26 is__do:-44 is__for:-57 is__free:145 is__going:36 is__oil:24 is__on:-42
is__price:41 is__really:63 is__still:63 is__total:26 is__with:-19 is_a:-21 is_an:41 is_it:113 is_on:-23 is_that:56
is_the:89 is_there:72 is_this:-56 is_tight:-26 is_too:-23 is_wrong:-29 it:85 it_$:-43 it__and:16 it__for:-16
it__free:29 it__like:24 it__ok:-16 it__or:38 it__to:-30 it__under:101 it__up:15 it_a:-43 it_be:50 it_cost:69
it_for:-61 it_in:-17 it_is:-42 it_really:47 it_still:67 job:19 jueves:21 just:56 know:-15 la:-22 la__de:19 la__y:18
la_cara:-19 la_factura:-19 la_hora:19 la_otra:38 la_ultima:-24 labor:134 labor_$:107 lado:16 las_$:-55 las_cuatro:15
las_dos:31 last_time:-20 late:-14 later:21 later_one:22 le:-80 le__a:-20 le_falta:-17 le_sale:-27 left:-72
left_on:-50 les:-55 life:-50 like:15 like_a:-19 like_the:18 line:19 live:-15 llantas:19 lleva:-20 llevo:19 lo:-59
lo__que:31 lo_dan:30 lo_mismo:30 lo_que:-48 loaner:14 lol:15 long:16 long_$:53 longer:-52 look:25 look_at:39
looking:45 looking_at:35 los:15 lunch:24 lunes:-23 make:-14 mandan:-22 mano:24 many:30 mas:-68 mas_$:-46
mas__menos:36 mas_de:37 mas_o:36 mas_que:-15 matter:-18 me:31 me_$:32 me__a:56 me__ahi:-18 me__algo:18 me__bien:-18
me__cuanto:34 me__dar:33 me__de:-38 me__muy:28 me__nada:15 me__que:-40 me__un:74 me__una:52 me_back:47 me_cobran:33
me_cobraron:-72 me_da:129 me_dice:36 me_espero:-51 me_for:-31 me_hace:22 me_how:16 me_la:-17 me_lo:-41 me_puede:19
me_sale:47 me_the:48 me_tienen:-23 me_van:27 me_what:19 me_with:41 mean:-25 mean_$:-21 mejor:-17 menos:44 mi:-18
miercoles:15 mileage_$:17 mine:18 mismo:32 monday__be:-15 money:-83 money_$:-52 money__tight:-27 money_is:-27
month_$:-16 more:-40 much:211 much_$:60 much__how:54 much__i:37 much__it:146 much__the:42 much_and:52 much_for:42
much_is:134 much_time:-75 much_to:39 much_will:20 much_would:37 mucho:-23 must:-40 muy:-45 muy_caro:-46 my:-55
my__go:-51 my__in:26 my__is:-65 my_dad:15 my_warranty:52 n:23 need:-35 need_$:-46 need__loaner:16 need_a:33 never:-15
new:20 news:15 next_month:-15 nine:-14 no:36 no_$:-23 no__aunque:17 no__el:21 no__en:18 no__is:-66 no__was:14
no_but:23 no_me:26 no_thanks:43 no_traigo:-17 no_what:-47 nomas:61 not:-90 not_at:-36 now:-74 now_$:-70 number:59
number_$:38 o:49 o__en:14 o_menos:36 obra:24 ocupo_$:18 of:26 of_my:-41 of_the:42 off:-54 off_$:-52 oh:-19 oiga:14
oil_change:32 ok:-32 ok_$:-20 ok__it:22 ok_but:-25 ok_is:24 on_$:46 on_a:-17 on_me:-16 on_my:16 one:19 one__much:36
one_how:16 open_$:-15 or:105 or_$:15 or__i:24 or__that:19 otra:17 otra_vez:17 otro_lado:17 out:23 out_of:28 over_$:16
owe:-28 pads:16 pague:-14 paid:-74 paid_$:-38 para:68 para__viernes:17 para_el:21 para_entonces:14 parts:14 pay_$:44
pay_for:-18 perdida:-37 perdida_total:-37 pero:53 pero__el:22 pero_cuanto:20 pero_digame:14 person:-18 pick:26
pick__up:21 place:51 place_$:18 please:37 please_$:27 please__the:14 pm:20 podria:18 por:199 por__que:15 por__y:-19
por_el:19 por_favor:-14 possible:-19 precio:230 precio_$:70 precio_y:31 price:190 price_$:92 price_on:26 prices:-36
pueda:-58 pues:-18 pues_$:-15 que:-75 que__a:-15 que__eso:-18 que__por:16 que__tiene:17 que_es:-21 que_la:24
que_precio:49 que_tan:47 que_tanto:33 queda:-76 queda_$:-69 quedo:18 quemado:-14 quick:-17 quien:-34 quien_es:-17
quiero:18 quisiera:17 quote:47 quote_$:-66 rate:21 rato:-72 rato_me:-47 really:68 refund:-65 refund_$:-55 remind:24
remind_me:24 right:-25 right_now:-32 ring:-16 rip:-18 robo:-24 rough:30 run:261 run_$:192 run_me:56 runs:18 saber:27
said:15 sale:-68 sale_$:24 sale_humo:-20 sale_un:-14 salir:-38 salir_$:-34 saturday:14 saturday_morning:16 saving:17
say:16 se:-210 se_lleva:-20 se_queda:-24 se_tardan:-45 sedan:17 sell:17 send:16 send_me:26 ser_$:15 seria:70
seria_$:37 serious:-17 service_$:-14 servicio:23 servicio_$:18 set:91 set__back:49 set_me:49 set_of:52 shop:-48
should_i:16 si:41 si__favor:-23 si_cuanto:17 si_gracias:16 si_pero:17 si_por:-23 siempre:17 sign:14 skip:-18
skip_it:-17 snow:-14 so:-36 so__can:16 so_i:27 so_much:-47 sometime:24 son_$:14 still:63 still__the:17 stop:-17
sure:32 take:-69 talkin:22 talkin_$:22 talking:25 talking_$:15 tan:48 tan__es:49 tanto:31 tarda:-24 tarda_$:-16
tardan:-45 tardan_$:-44 tarde:17 tax:58 tax_$:63 te:-22 tell:79 tell_me:54 tempranito:22 text:-15 th_$:-16 than:-69
than__i:-15 thank:-24 thank__so:-25 thank_you:-24 thanks:14 that:52 that_$:-119 that__be:-18 that__to:35 that_is:-34
that_works:14 that_would:-17 the:94 the__and:31 the__end:15 the__going:23 the__in:14 the__is:-17 the__one:23
the__was:-39 the_bill:31 the_cost:21 the_damage:26 the_front:21 the_house:27 the_other:18 the_quote:-90
the_thursday:15 the_tires:-38 the_total:30 them:-78 them_$:-79 there:42 there_$:-27 there_a:70 these:54 these_days:67
thing:-48 thing_$:-18 this:-40 this_$:-18 this_about:-15 those:-20 though:25 though_$:21 thurs:14 thurs_works:17
thursday_and:32 tiempo:-67 tiempo_lo:-16 tienen:-14 tienen_$:-14 tight:-29 tight_$:-16 til:15 time:-107 time__it:-31
time__you:-53 time_do:-58 tires:16 tires_$:-23 to:37 to_$:26 to__a:30 to__at:41 to__for:-35 to__like:14 to__me:42
to__my:24 to_a:-20 to_cost:24 to_drive:-15 to_fix:29 to_it:-32 to_look:43 to_pay:-20 to_sell:19 to_set:27 to_the:-15
to_wait:22 toma:-49 toma_$:-34 tomorrow:28 too:-142 too__for:-49 too_much:-64 took:-16 top:-19 total:100 total_$:16
tow:17 tow_hitch:17 trabajo:-20 trabajo_$:-17 tread:-24 tuesday_$:-15 tuesday__is:23 tuesday_at:23 twice:-30
twice_$:-28 two_$:16 ultima:-25 ultima_vez:-19 un:68 un__de:15 una:48 under:82 up:43 up_$:45 up__a:15 up__me:22
up_with:15 urgent:-22 urgent_$:-21 usted:-16 va:42 va__salir:20 va__ser:20 va_a:40 vale:62 van_a:14 veces:-21
vemos:15 ver:18 verdad_$:-17 very:-18 viernes__a:14 wait:20 want:22 warranty:58 was:-43 was_it:45 was_the:16 way:22
we_talkin:22 we_talking:29 wednesday:-15 what:142 what_$:-67 what__i:96 what__is:-58 what__it:-49 what__that:43
what__the:100 what__this:-22 what__wrong:-18 what__you:92 what_a:-27 what_am:47 what_are:97 what_did:-14 what_do:106
what_does:-16 what_i:-30 what_time:-26 what_will:26 what_would:142 what_you:28 when:-92 when__get:-41 when_i:-52
which:-48 who:-47 who__this:-19 who_is:-21 why:-88 why_$:-26 wifi:-60 wifi_$:-43 will:72 will__be:43 will_do:-15
will_it:63 wise:15 wise_$:32 with:54 with_a:42 works:22 would:70 would_be:-40 would_it:15 would_that:62 would_the:41
would_you:-48 wrong:-42 wrong_with:-18 y:241 y__a:34 y__por:36 y_como:-51 y_cuanto:77 y_de:24 y_donde:59 y_en:24
y_me:15 y_si:26 yeah:15 yes_$:-45 yes__how:30 yes__it:53 yes__much:23 yes__the:-26 yes__would:-18 yes_but:-19
yes_how:23 yet:26 yet_$:27 you:-68 you_$:-23 you__and:15 you__bot:-25 you__do:-17 you__for:83 you__have:48 you__it:37
you__much:-34 you__my:-22 you__the:-20 you__to:15 you_a:-25 you_are:-22 you_be:-63 you_charge:80 you_charged:-27
you_get:14 you_guys:31 you_need:-49 you_so:-25 you_take:-51 you_tell:14 you_want:30
"""
