"""What speaks for and against `complaint`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "complaint"
BIAS = -135
WEIGHTS = """\
#acan:56 #acar:52 #acce:44 #acti:-36 #adie:119 #adio:33 #ador:27 #ados:67 #affi:-22 #afte:31 #agar:-27 #ager:39
#agua:-26 #aile:-27 #aint:-74 #aite:45 #aiti:25 #akes:-35 #aler:-28 #algo:37 #algu:-25 #alin:31 #alio:57 #alir:-32
#alle:63 #alls:-18 #ally:55 #alwa:28 #amad:-19 #amar:20 #amba:21 #amen:-22 #amos:-19 #anag:40 #anda:-18 #ande:-31
#ando:20 #ange:-22 #angi:56 #anic:-21 #anne:65 #anno:77 #anot:32 #answ:41 #anta:48 #anto:-23 #apol:21 #appi:-19
#appo:28 #appy:62 #apun:-18 #aqui:-20 #arad:18 #arag:-22 #aran:29 #arca:-65 #arda:42 #aret:25 #arge:59 #aria:-23
#arle:19 #arlo:-21 #arly:51 #arme:38 #aron:361 #arra:-29 #arro:22 #asar:-20 #asie:22 #aske:53 #asnt:37 #asse:-19
#asta:-48 #aste:-25 #asti:74 #asto:53 #atar:28 #ated:43 #aten:55 #ater:-19 #ates:-37 #atie:22 #ause:21 #auto:-37
#avia:21 #avor:-45 #ayar:23 #ayin:-31 #baby:18 #back:64 #baja:-30 #bank:-34 #baro:-43 #bcap:48 #bein:76 #best:-38
#bien:59 #bill:194 #blan:-24 #blar:-24 #blem:-18 #body:126 #bols:50 #boni:45 #boug:-18 #brak:-66 #bran:-31 #brar:116
#brat:-23 #brok:-51 #buck:28 #bump:19 #burn:20 #busc:-18 #busi:100 #cada:49 #call:-32 #came:32 #cans:53 #cant:-81
#cara:60 #card:23 #carl:30 #caro:-57 #caus:21 #ccep:37 #ccio:-20 #cell:-20 #cepc:41 #cept:26 #cesi:-47 #chan:37
#char:71 #chec:-40 #choo:-18 #chos:43 #cien:-30 #ciga:34 #cion:47 #cios:26 #cita:-19 #cked:39 #cker:34 #cket:21
#clas:26 #clie:20 #cobr:100 #code:-30 #come:62 #comi:-24 #comp:-107 #conf:97 #cont:45 #cord:20 #corr:-20 #cort:-26
#cosa:19 #cost:-82 #crib:41 #croo:26 #ctiv:-32 #cual:-20 #cuan:-113 #cuen:47 #culo:27 #culp:19 #cupo:-18 #darm:-22
#daro:67 #davi:22 #dawn:18 #deja:52 #deje:-30 #dema:66 #dent:-23 #derf:46 #desd:40 #desk:47 #deso:76 #devo:67
#dias:52 #dicu:28 #didn:105 #dier:42 #diga:-31 #dije:87 #dine:24 #ding:29 #dios:-19 #dirt:40 #disa:52 #dobl:24
#doll:27 #dond:-19 #done:-21 #door:35 #down:19 #dred:21 #driv:-62 #dule:-22 #duro:33 #eale:-26 #eall:73 #eant:-20
#earl:42 #ease:59 #eate:43 #eats:21 #ecal:-18 #ecep:35 #eces:61 #echa:-21 #ecio:-38 #edal:-25 #edan:-18 #eded:28
#eden:-32 #edes:71 #edul:-22 #eede:28 #eemb:50 #efie:-27 #efon:32 #egan:25 #egre:53 #egun:27 #eing:82 #ejar:56
#ejor:-45 #elef:32 #emas:94 #embo:50 #emin:-28 #empr:75 #enca:-21 #enci:26 #enco:-44 #ende:39 #endi:-23 #enes:-24
#engo:-32 #enia:19 #enla:39 #enos:38 #ensa:97 #enta:51 #ento:24 #enty:28 #eopl:86 #epai:39 #epci:41 #epta:35 #eran:51
#erch:25 #erda:33 #erdi:30 #ered:28 #eren:68 #eres:-44 #erfu:46 #eria:18 #erie:41 #erio:59 #erne:-32 #eron:211
#eros:88 #erri:28 #erso:-46 #eryt:-50 #esar:48 #esco:18 #escr:46 #esda:-22 #esde:40 #eset:38 #esim:60 #esit:-51
#esor:72 #espe:121 #esse:90 #essu:19 #esta:-24 #esto:31 #estu:29 #etie:22 #etti:37 #even:21 #ever:85 #evis:-19
#evol:67 #expe:19 #expl:28 #extr:21 #falt:44 #fast:25 #favo:-45 #feel:35 #fend:18 #fier:-28 #filt:43 #fine:-27
#five:35 #fixe:34 #fono:34 #fore:54 #forg:62 #form:78 #four:48 #fren:-30 #frid:-18 #from:-24 #fter:31 #fund:-19
#gado:-23 #game:-25 #gara:-26 #gare:22 #garo:29 #garr:-20 #gast:35 #gave:30 #genc:-20 #gent:18 #gett:49 #ging:78
#give:-30 #gone:26 #good:-76 #grea:103 #gres:54 #gros:72 #gual:40 #guen:-19 #guna:-21 #gunt:36 #gust:47 #guys:-25
#habl:-25 #hace:-33 #hang:38 #hank:-57 #happ:44 #harg:72 #hast:-43 #have:-20 #heat:-18 #heck:-33 #hedu:-22 #high:22
#hile:20 #hing:19 #hink:-22 #hird:60 #hizo:-18 #hock:31 #hoev:23 #hood:27 #hool:-18 #hora:91 #hori:-22 #hose:-20
#hour:56 #hree:61 #hrou:46 #hubc:48 #huma:-21 #hund:20 #hung:23 #hurs:-26 #iado:69 #iben:40 #ibir:-23 #ible:21
#ibra:-31 #icio:-23 #icul:27 #idad:23 #iday:-24 #idea:-31 #idic:28 #idnt:105 #iemp:51 #ienc:22 #iend:19 #iene:-38
#iere:68 #iern:-31 #iero:125 #ieza:35 #igar:34 #ight:28 #igua:39 #igue:62 #ijer:44 #iled:-23 #ills:46 #imes:78
#ince:20 #inco:67 #inde:-23 #inea:27 #ined:35 #iner:31 #infl:18 #inst:-20 #ints:-33 #inut:41 #invo:28 #iona:19
#ione:-19 #ious:64 #ippe:100 #isap:53 #ised:45 #isit:102 #ismo:43 #ista:-30 #iste:40 #isto:-21 #ited:45 #itin:29
#iven:-21 #ixed:30 #jaja:-36 #jaro:71 #jero:33 #june:-18 #junt:-21 #just:33 #keep:23 #keys:28 #kind:-28 #king:-29
#know:-48 #lain:-77 #lama:-18 #laro:30 #lars:21 #last:109 #ldnt:37 #lefo:32 #left:138 #lega:28 #lema:24 #leme:-20
#less:-18 #lest:50 #leva:-26 #levo:31 #lgun:-18 #lied:44 #ligh:-21 #line:27 #list:-47 #live:-32 #llar:27 #llas:-18
#lled:83 #lleg:21 #long:-25 #look:-43 #loos:30 #lous:28 #ltas:19 #ltim:47 #lvan:18 #lvie:56 #lway:28 #mada:-20
#made:24 #make:25 #mala:40 #mall:-27 #malo:-36 #mana:38 #mand:-34 #mani:32 #mann:66 #many:78 #marc:-62 #mber:-34
#mbol:49 #mbre:-19 #mean:-25 #mejo:-45 #mens:90 #ment:-63 #mero:-63 #mess:20 #mind:-34 #mine:-24 #minu:34 #mise:38
#mism:38 #mist:-18 #mole:50 #mond:-18 #mone:59 #moot:-20 #more:76 #most:18 #move:-19 #mpla:-90 #mple:22 #mpra:21
#mpre:116 #much:56 #nada:94 #nadi:119 #nage:39 #nail:-22 #name:-37 #naro:39 #ncio:38 #ncon:27 #ndan:33 #nday:-20
#nden:-36 #nder:65 #ndre:21 #nece:-48 #need:-71 #nero:29 #ners:65 #next:-33 #nfla:18 #nfor:64 #nfun:-25 #ngan:22
#nger:19 #ngin:59 #nigh:48 #nine:24 #nito:31 #nner:66 #nnoy:78 #nobo:134 #noch:32 #noma:31 #none:18 #noth:95 #noyi:71
#nsaj:85 #nsan:33 #nswe:41 #ntac:-29 #ntad:26 #ntar:24 #ntas:22 #nted:55 #nter:18 #ntes:113 #ntis:-20 #ntra:-56
#ntre:18 #numb:-30 #nume:-42 #nunc:70 #nute:22 #nvoi:28 #obar:-25 #oble:28 #obod:134 #obra:78 #obro:20 #oche:28
#ocke:72 #ocup:-19 #odav:22 #oday:28 #oice:30 #oint:38 #ojal:21 #oles:39 #olla:24 #olog:21 #olso:50 #olvi:59 #omas:27
#omis:38 #ompl:-87 #onal:19 #onda:-18 #onde:28 #oned:24 #oner:55 #oney:39 #onfi:60 #onfu:-27 #onit:43 #only:-27
#onta:-26 #onte:122 #ontr:-51 #oose:30 #ooth:-20 #open:-46 #ople:90 #oras:72 #orde:57 #orev:65 #orge:20 #orgo:42
#orit:-20 #orks:-19 #orme:65 #orra:-18 #orry:-22 #orse:59 #orst:48 #orth:-27 #oser:60 #osto:-21 #ostr:24 #otal:-26
#othe:22 #othi:63 #ould:-43 #ound:-31 #ours:45 #ousl:52 #ouve:24 #over:59 #owns:28 #oyin:71 #paga:18 #paid:21
#pair:41 #para:-50 #pare:22 #pasa:-28 #pass:-24 #payi:-28 #pcio:36 #peda:-25 #pens:-34 #peop:86 #peor:85 #pera:63
#perd:54 #peri:24 #pers:-44 #pesi:60 #peto:34 #piez:35 #ping:-26 #plai:-75 #plen:34 #plug:38 #poin:34 #poke:28
#polo:21 #pone:53 #porq:27 #pped:80 #ppie:-19 #ppoi:28 #pran:23 #prec:-39 #pref:-29 #preg:36 #pren:-31 #pres:94
#pret:23 #pric:-26 #prin:24 #prom:51 #pued:-106 #pues:64 #pull:-20 #puro:61 #qued:93 #quej:-26 #quer:21 #quic:-29
#quin:-20 #quit:-22 #quot:24 #rade:-19 #radi:37 #rado:26 #raff:-21 #rain:35 #rake:-65 #rand:54 #rano:18 #raro:73
#rata:38 #rate:18 #rato:21 #raya:25 #rcar:-39 #rcha:19 #rdar:57 #rden:51 #rder:26 #real:92 #reas:65 #reat:102
#reca:-19 #rece:20 #reci:-36 #rect:19 #reem:49 #refi:-27 #rega:20 #regr:53 #regu:40 #remi:-28 #remo:-19 #rend:-32
#reno:-23 #rent:18 #repa:40 #rero:18 #reso:41 #resp:50 #ress:75 #rest:-21 #rett:31 #reve:59 #rful:46 #rged:102
#rget:20 #rgot:42 #ribe:39 #ribl:35 #ridi:27 #righ:19 #rint:26 #rios:24 #riou:49 #ripp:97 #rita:-21 #rite:40 #rito:19
#rive:-61 #rmis:-18 #rned:23 #rnes:-29 #roba:-22 #rock:-39 #roke:-51 #romi:38 #rong:40 #rook:26 #rose:62 #rote:29
#roug:42 #rrib:34 #rrie:-25 #rson:-46 #rtie:29 #rude:58 #ruid:-19 #runs:-18 #rust:89 #ryin:36 #ryth:-50 #saca:106
#said:56 #saje:86 #sale:-40 #sali:34 #same:52 #sapp:53 #saro:40 #scam:-28 #sche:-22 #scho:-18 #scon:22 #scri:36
#sday:-33 #seat:72 #sell:37 #send:-41 #sent:46 #seri:67 #sero:48 #shak:-19 #shoc:31 #sick:77 #siem:57 #sien:24
#sign:-30 #sigu:52 #sill:22 #simo:67 #sinc:33 #sing:27 #sito:-42 #sits:40 #sked:53 #slow:18 #smoo:-20 #sold:53
#sona:-30 #soon:-25 #sorr:-20 #spec:-21 #sper:78 #spet:40 #spok:28 #sque:-20 #ssed:74 #ssur:19 #sted:60 #sten:21
#ster:40 #stic:57 #stil:93 #stop:-63 #stra:19 #stri:35 #stuf:61 #stuv:30 #suci:25 #sues:-22 #swap:-18 #swer:41
#tabl:27 #tact:-29 #take:-31 #tall:22 #tand:19 #tant:85 #tard:35 #tari:-18 #tarm:21 #taro:32 #tart:-31 #tate:-24
#tche:39 #tech:27 #tede:71 #tele:26 #tell:-51 #tenc:52 #teng:-42 #terd:23 #tere:-42 #terr:28 #test:95 #teve:-20
#text:126 #that:19 #then:-18 #ther:36 #they:18 #thir:59 #thos:-25 #thre:59 #thro:39 #thur:-26 #tier:67 #till:60
#tima:29 #time:167 #ting:69 #tira:-20 #tire:-36 #tive:-24 #toda:61 #todo:-45 #told:89 #toma:-19 #tome:-19 #took:59
#tota:-26 #traf:-23 #trai:-29 #trar:-44 #tras:-31 #trat:59 #trea:61 #tres:50 #trip:28 #trus:90 #tter:-30 #ttin:42
#tues:-20 #tuff:61 #turn:-20 #tuve:47 #tuvo:21 #twic:109 #uant:-95 #ubca:48 #ucho:51 #ucio:24 #ucks:27 #ueda:-22
#uede:38 #uedo:-32 #ueja:-21 #uelv:21 #uena:-21 #uent:44 #ueri:25 #ueve:-20 #uevo:32 #uick:-29 #uien:-34 #uier:21
#uldn:37 #ulou:28 #ulpa:25 #ulti:44 #uman:-21 #umbe:-30 #umer:-28 #umpe:23 #unca:68 #unde:-18 #undr:20 #unos:35
#unta:21 #unte:46 #uote:24 #urge:-36 #usca:-18 #usly:52 #usta:-19 #uste:65 #usto:63 #utes:26 #vece:111 #vend:26
#veni:27 #vent:-23 #verc:25 #very:-22 #vibr:-30 #viej:18 #vier:44 #visa:19 #visi:92 #viso:-20 #voic:31 #volv:73
#vuel:32 #want:-22 #wasn:39 #ways:27 #were:25 #when:-31 #whil:20 #whoe:23 #wice:109 #will:-70 #wipe:19 #with:49
#wond:45 #work:39 #wors:108 #wort:-26 #woul:-18 #writ:37 #wron:40 #wrot:28 #xted:20 #yaro:23 #yest:23 #ying:66
#your:94 #youv:24 #ythi:-48 %again_later%agree:41 %again_later%away:-69 %again_later%bad:73 %again_later%bring:38
%again_later%busy:-48 %again_later%car_part:87 %again_later%do_it:47 %again_later%doubt:26 %again_later%elsewhere:38
%again_later%family:-27 %again_later%gone_car:36 %again_later%leave_me:-18 %again_later%machine:26
%again_later%money:76 %again_later%on_way:-33 %again_later%opening:40 %again_later%pay_day:-24 %again_later%phone:47
%again_later%question:21 %again_later%refuse:67 %again_later%season:-34 %again_later%shift_it:50
%again_later%staff:30 %again_later%thanks:44 %again_later%who:36 %again_later%wrong_one:118 %agree:-152
%agree%away:35 %agree%bad:73 %agree%busy:-27 %agree%call_off:34 %agree%car_part:-42 %agree%doubt:-44
%agree%elsewhere:25 %agree%fails:18 %agree%how_long:42 %agree%leave_me:48 %agree%message:60 %agree%money:51
%agree%noise:-20 %agree%on_way:51 %agree%opening:24 %agree%phone:-26 %agree%question:87 %agree%refuse:150
%agree%staff:-39 %agree%start_again:-22 %agree%thanks:-44 %away%bad:-30 %away%car:-24 %away%pay_day:-18
%away%question:-49 %away%refuse:-19 %bad:481 %bad%bring:-31 %bad%busy:34 %bad%call_off:-36 %bad%car:32
%bad%car_part:84 %bad%do_it:64 %bad%doubt:36 %bad%elsewhere:63 %bad%family:66 %bad%gone_car:23 %bad%how_long:41
%bad%leave_me:22 %bad%lift:34 %bad%meaning:-130 %bad%message:21 %bad%money:48 %bad%noise:-25 %bad%odometer:21
%bad%phone:62 %bad%place:-18 %bad%refuse:-20 %bad%season:23 %bad%shift_it:32 %bad%staff:213 %bad%start_again:71
%bad%thanks:41 %bad%wrong_one:26 %bring:-18 %bring%busy:-51 %bring%call_off:-19 %bring%car:20 %bring%do_it:43
%bring%doubt:26 %bring%elsewhere:-27 %bring%how_long:36 %bring%leave_me:-21 %bring%on_way:57 %bring%opening:27
%bring%refuse:-30 %bring%shift_it:-30 %bring%start_again:18 %bring%wrong_one:85 %busy:51 %busy%elsewhere:-20
%busy%fails:52 %busy%leave_me:-20 %busy%message:27 %busy%refuse:77 %busy%shift_it:-23 %busy%staff:-28
%busy%thanks:-19 %call_off:-83 %call_off%car:-26 %call_off%car_part:18 %call_off%do_it:-65 %call_off%doubt:50
%call_off%elsewhere:49 %call_off%fails:102 %call_off%how_long:63 %call_off%lift:20 %call_off%message:-132
%call_off%noise:32 %call_off%odometer:21 %call_off%on_way:35 %call_off%phone:53 %call_off%question:128
%call_off%refuse:26 %call_off%shift_it:30 %call_off%staff:63 %call_off%start_again:23 %call_off%who:30
%call_off%wrong_one:47 %car:-34 %car%do_it:22 %car%fails:-38 %car%gone_car:-76 %car%how_long:18 %car%lift:-22
%car%odometer:26 %car%on_way:25 %car%pay_day:-18 %car%refuse:-97 %car%start_again:31 %car_part%fails:-65
%car_part%how_long:21 %car_part%leave_me:-30 %car_part%lift:18 %car_part%meaning:-22 %car_part%money:-18
%car_part%noise:-24 %car_part%odometer:-19 %car_part%phone:23 %car_part%place:-21 %car_part%question:-44
%car_part%refuse:91 %car_part%smoke_smell:-21 %car_part%staff:98 %car_part%thanks:52 %car_part%who:25
%car_part%wrong_one:43 %do_it:-41 %do_it%elsewhere:-77 %do_it%gone_car:-35 %do_it%how_long:79 %do_it%leak:-22
%do_it%lift:25 %do_it%meaning:26 %do_it%message:-51 %do_it%on_way:22 %do_it%opening:18 %do_it%refuse:129
%do_it%season:-20 %do_it%shake:18 %do_it%shift_it:-39 %do_it%thanks:25 %do_it%who:34 %doubt:21 %doubt%gone_car:38
%doubt%how_long:49 %doubt%message:-54 %doubt%money:52 %doubt%on_way:18 %doubt%question:19 %doubt%shift_it:49
%doubt%staff:-18 %doubt%start_again:-18 %elsewhere%family:-21 %elsewhere%message:30 %elsewhere%money:111
%elsewhere%on_way:-24 %elsewhere%pay_day:-18 %elsewhere%question:90 %elsewhere%refuse:-80 %elsewhere%shift_it:46
%elsewhere%start_again:-26 %elsewhere%wrong_one:-39 %fails:-94 %fails%how_long:-33 %fails%message:-39
%fails%refuse:84 %fails%wrong_one:-32 %family:-22 %family%message:19 %family%money:41 %family%shift_it:-31
%gone_car:-74 %gone_car%on_way:21 %gone_car%question:49 %gone_car%thanks:21 %gone_car%wrong_one:40 %how_long:47
%how_long%money:-34 %how_long%on_way:44 %how_long%opening:26 %how_long%phone:25 %how_long%question:-33
%how_long%refuse:38 %how_long%wrong_one:42 %leak%refuse:23 %leave_me:-27 %leave_me%message:-23 %leave_me%on_way:37
%leave_me%pay_day:62 %leave_me%question:51 %leave_me%refuse:-21 %leave_me%season:56 %leave_me%staff:26
%leave_me%start_again:-26 %lift:47 %lift%on_way:-23 %lift%opening:61 %lift%pay_day:26 %lift%phone:20
%lift%question:-30 %lift%refuse:31 %machine:33 %machine%refuse:31 %meaning:-122 %meaning%money:24 %meaning%on_way:50
%meaning%phone:-49 %meaning%question:-42 %meaning%refuse:-46 %message:108 %message%on_way:170 %message%pay_day:50
%message%phone:-31 %message%question:32 %message%refuse:-76 %message%season:68 %message%shift_it:50
%message%start_again:-165 %message%thanks:-19 %message%who:-31 %message%wrong_one:-18 %money:160 %money%odometer:108
%money%on_way:-31 %money%pay_day:88 %money%phone:29 %money%shift_it:89 %money%staff:38 %money%start_again:54
%money%thanks:106 %money%wrong_one:57 %noise:-64 %noise%question:-21 %noise%refuse:47 %odometer:43
%odometer%pay_day:28 %odometer%phone:-32 %odometer%question:-37 %odometer%refuse:37 %odometer%staff:-21
%odometer%start_again:31 %on_way:19 %on_way%opening:27 %on_way%phone:37 %on_way%question:28 %on_way%staff:20
%opening:-29 %opening%question:-37 %opening%wrong_one:24 %pay_day%phone:20 %pay_day%shift_it:-29 %phone:-27
%phone%question:-67 %phone%refuse:26 %phone%shift_it:-40 %phone%start_again:39 %phone%who:70 %place:-80
%place%question:-24 %place%refuse:23 %place%staff:-19 %place%wrong_one:52 %question:-34 %question%refuse:-22
%question%shift_it:72 %question%start_again:-42 %question%thanks:24 %question%who:-60 %question%wrong_one:34
%refuse:-45 %refuse%season:18 %refuse%shift_it:-42 %refuse%staff:94 %refuse%start_again:74 %refuse%thanks:44
%refuse%who:-24 %season%shift_it:-38 %season%thanks:20 %shake:-70 %shift_it:-30 %shift_it%start_again:-33
%shift_it%thanks:34 %smoke_smell:-51 %staff:65 %staff%thanks:-44 %start_again:-79 %start_again%who:49
%start_again%wrong_one:51 %who:-52 %wrong_one:-26 @?:-196 @after_visit:205 @after_visit_cant_complain:-41
@after_visit_not_really:40 @car:-71 @confirm:-61 @day:-73 @later:-18 @nothing:35 @offers:-150 @reading:-38 @time:-98
@walk_in:-34 ^_a:-71 ^_al:-35 ^_all:-19 ^_and:-19 ^_another:37 ^_any:-28 ^_are:-45 ^_bank:-22 ^_been:25 ^_brakes:-24
^_cada:20 ^_call:-27 ^_can:-108 ^_cancel:24 ^_cant:-57 ^_car:-31 ^_como:-50 ^_cost:-22 ^_could:-26 ^_cuando:-23
^_cuanto:-77 ^_de:-82 ^_did:-30 ^_do:-65 ^_enough:-37 ^_esta:-33 ^_everything:-39 ^_fine:-21 ^_gracias:32 ^_great:57
^_have:-21 ^_hey:-20 ^_how:-63 ^_i:48 ^_im:-26 ^_is:-109 ^_it:-53 ^_la:58 ^_last:59 ^_let:-40 ^_llevo:37 ^_lo:-24
^_me:29 ^_meh:44 ^_my:-74 ^_need:-19 ^_no:26 ^_nobody:23 ^_not:27 ^_nunca:60 ^_oh:84 ^_oil:-22 ^_one:59 ^_otro:70
^_pesimo:26 ^_por:23 ^_prefiero:-22 ^_pues:42 ^_puro:40 ^_que:24 ^_quede:65 ^_quedo:-36 ^_sale:-21 ^_salio:31
^_scratch:-28 ^_se:-30 ^_si:-55 ^_siempre:59 ^_sin:-23 ^_son:66 ^_still:47 ^_text:-27 ^_thank:-24 ^_thanks:57
^_that:-19 ^_the:120 ^_this:94 ^_todo:-84 ^_too:-27 ^_took:21 ^_ustedes:28 ^_uy:21 ^_very:23 ^_voy:-18 ^_when:-19
^_who:-19 ^_why:77 ^_wow:39 ^_y:-46 ^_ya:-86 ^_yep:-31 ^_yes:-47 ^_yo:-28 ^_you:129 ^_your:119 a:70 a_$:-29 a__car:20
a__de:20 a__for:-20 a__hora:-20 a__is:67 a__off:100 a__time:-20 a__under:18 a_car:-22 a_good:-21 a_la:-31 a_month:41
a_phone:18 a_que:-34 a_rip:97 a_week:84 about_the:25 after:40 after_the:19 after_you:24 agua:-18 ahorita:-21 al:-60
al_cien:-25 algo:51 all:26 all_$:-42 all__my:44 all_day:27 all_good:-33 all_over:47 already_$:-23 always:28 am:-23
and:168 and__dont:-26 and__it:-20 and__one:23 and__the:18 and_how:-18 and_it:41 and_nobody:54 and_please:19
and_what:-18 and_you:31 ando:-24 annoying:71 annoying_$:69 another:32 another_bill:36 antes_$:30 any:-63
appreciate_it:20 are:-72 as:-59 as_well:-28 ask_me:-32 asked:53 asked_for:42 at:44 at_$:-25 at__counter:48 at__the:51
at_all:-24 at_and:-19 at_in:52 at_your:33 ate:18 atencion:45 baby:20 back:53 back_$:49 bad:-131 bad_$:-101 bank:-33
be:-32 being:76 best:-38 best_$:-36 bien:31 bien_el:30 bill:135 bill_$:38 bill_was:40 bonito:36 bought:-18 brake:-19
brakes:-46 brakes_feel:-21 broke:-42 bucks:29 bumper:24 but:-80 but_the:-27 but_what:-18 by:-38 by_the:-34 cada:38
call:-68 call_me:-56 called:57 called__back:47 called_me:44 came:36 came_back:-26 can:-177 can__send:-19 can_i:-39
can_you:-79 cant:-74 cant_complain:-44 cap:26 car:69 cara:50 card:25 care_of:-18 caro:-37 caro_$:-20 carro_$:29
changed_my:21 changing:60 charge:-33 charge_for:-22 charged:77 charged__for:24 charged_me:38 check:-26 chiste:18
cien:-25 cien_$:-23 clientes:21 cobran:-25 cobran_$:19 cobran_por:-33 cobraron:91 cobraron__mas:28 cobraron_de:28
cobro:20 code:-30 come:66 come__it:49 come_back:20 come_in:34 coming:-23 como_me:26 complain:-44 complain_$:-41
complaints:-49 con:138 con__que:29 con_el:53 con_la:37 con_lo:20 con_los:-22 con_un:19 con_ustedes:57 contact:-18
contento:20 contesta:48 cost:-50 cost_$:-20 costo:-20 could:-42 could_you:-41 couldnt_be:18 count:-20 count_me:-18
counter:52 cuanto:-116 cuanto__el:-27 cuanto_me:-36 cuenta:53 da:-54 dawn:18 day:-34 day_$:-40 days:22 de_$:-28
de__llanta:37 de__manana:26 de__no:-20 de_la:43 de_las:-31 de_mas:40 de_que:-36 de_regreso:29 dealer:-24 dejaron:76
dejaron_el:37 del:-19 desde:40 desde_que:33 desk:47 devolvieron:56 dias:52 dias_$:21 did:-55 did_my:26 did_that:-23
did_you:-43 didnt:105 dije:43 dijeron:34 dinero:25 do:-133 do__charge:-23 do__guys:-19 do__keep:54 do__own:-18
do_i:-23 do_my:-18 do_you:-36 doble:23 dollars:21 donde:-19 done:-18 dont__me:53 dont__you:60 dont__your:-45
dont_have:-28 dont_know:-25 dont_text:46 door:31 door_$:18 dos:81 dos_veces:72 down_on:-32 drive:-38 duro:33 early:47
early_$:40 el:51 el__a:-20 el__dia:-19 el__todo:28 el__y:31 el_carro:30 el_dia:35 el_gerente:19 el_mismo:24
el_numero:-36 el_otro:-30 el_servicio:-21 el_telefono:54 el_trabajo:58 el_viernes:-21 else:-21 en:-21 en__noche:40
en__taller:-26 en_otro:-27 encontraron:-44 enough_$:37 entregaron:20 era:24 es:-58 es_$:-35 es__mismo:19 es_el:-20
es_un:35 escriban_$:-23 escriben:41 ese:-82 ese_servicio:-32 eso:-51 esperando:54 espere:29 esta:-112 esta_$:-31
esta_muy:-24 estan:-21 estuvo:21 even:25 ever:40 every:36 every__i:38 every_time:31 everything:-50 everything_was:-35
falta:21 falta_de:30 far:-24 favor:-45 favor_$:-37 feel:47 fine:-27 fine_$:-29 first_$:-21 five:35 five_$:20 fix:23
fixed:34 for:74 for__i:24 for__oil:19 for_a:29 for_an:18 for_me:-55 for_nothing:91 for_that:26 forever:65 forget:20
forget__i:19 forget_it:20 forgot:42 forgot_to:48 four:29 freno:-30 from:-24 front_desk:39 fue__que:-20 fue_lo:-20
fui:45 garage:-22 gave:30 gave_me:18 gente:23 get:-66 get_a:-23 get_my:-30 getting:49 give:-29 give__a:-18
give_me:-30 going_to:-34 gone:26 good:-76 good_$:-28 got__wrong:-28 got_a:-25 got_it:18 got_my:22 got_the:-30
got_to:-18 gracias_$:-45 gracias__nada:60 gracias_por:59 grease:50 grease__over:38 grease_all:38 greasy:18 great:36
great_$:-30 great__bill:36 great_another:36 grosero:24 gusto:73 guy_$:-27 guys:-25 guys_$:27 guys_do:-19 hablar:-33
hablar_con:-29 had:62 had_to:39 happier:-19 happy:59 has:30 hasta:-43 hasta_que:-22 hate:20 have__wrong:-25
have_a:-22 have_been:25 have_my:-20 have_never:-18 have_no:23 have_the:-22 hay:-35 he:-41 here:-30 here_$:-41 hey:-21
high:-21 hizo:-18 hood:27 horas:72 horas_$:32 hours:48 how__was:33 how_bad:-24 how_come:26 how_i:46 how_many:-25
how_much:-27 hoy:19 hubcap:48 hundred:21 i:108 i__a:-32 i__for:23 i__know:-19 i__my:-55 i__never:-32 i__to:-20
i__told:31 i_asked:20 i_came:21 i_come:38 i_do:-22 i_feel:52 i_get:-49 i_got:47 i_have:34 i_left:41 i_live:-24
i_need:-35 i_paid:37 i_said:-22 i_think:-27 i_told:20 i_want:20 i_was:121 idea:-31 if_i:-21 igual:42 igual_$:29
ill:-40 im:31 im__of:42 im__work:31 im_at:34 in_$:-42 in__a:24 in__and:40 in__car:30 in__is:37 in__morning:62
in_a:-36 in_another:-26 in_it:54 in_june:-20 in_my:20 in_the:39 interesa:-23 interesa_$:-19 invoice:28 is_$:-41
is__a:-70 is__bad:-22 is__bill:-19 is__i:22 is__new:40 is_getting:53 is_it:-51 is_something:40 is_still:22
is_that:-29 is_there:-33 is_this:-40 is_tight:-19 is_wrong:21 is_your:-22 issues:-22 it:27 it_$:-38 it__a:-18
it__in:26 it__ok:-31 it__to:-24 it_in:-23 it_is:101 it_still:37 it_you:25 jaja:-28 jala:-19 june:-18 june_$:-23
just:26 keep:39 keep__me:50 keep_texting:48 key:20 keys:28 know:-45 know_you:-28 la:110 la__es:20 la__no:29
la__que:-18 la__vez:99 la_atencion:31 la_cara:49 la_cuenta:45 la_lista:-18 la_llanta:26 la_manana:20 la_noche:46
la_otra:52 la_semana:-21 la_tarde:-18 la_ultima:41 la_verdad:26 las:-26 las__la:30 las_de:36 las_llantas:-23 last:107
last__and:34 last__you:42 last_month:-22 last_night:-32 last_time:159 last_week:-46 late_$:-26 later:-34 later_$:-20
le:-150 le__a:18 le__el:-19 le_hicieron:-41 left:138 left_$:-19 left_a:61 les:56 let:-51 let_me:-37 lied:37 list:-27
list_$:-30 lista:-20 live:-26 live_in:-22 llamada_$:-23 llanta_$:27 llantas:-23 llantas_$:-21 llevo:31 lo:-78
lo__a:-26 lo__ahi:22 lo__con:46 lo__el:-24 lo__en:-23 lo__me:21 lo_hicieron:-43 lo_mismo:26 lo_que:35 lo_robaron:-22
lol:-49 lol_$:-19 long:-24 look_at:-18 loose:30 loose_$:35 los:-80 los_mensajes:-49 lost_my:35 lot:43 made:24
makes:29 makes_the:36 mal:21 mal_$:-45 mal_el:-19 mall:-24 malo:-35 manager:40 manana_$:-23 mandan:32 manden:-27
manden_nada:-26 manners:58 many:78 many_texts:104 mas:47 mas__menos:18 mas_mensajes:-19 mas_o:18 mas_que:25 me:116
me_$:-64 me__algo:58 me__como:33 me__el:49 me__en:24 me__esperar:27 me__hablar:-24 me__hicieron:-33 me__horas:19
me__im:29 me__in:23 me__june:-25 me__la:46 me__mal:38 me__mas:-42 me__mensajes:41 me__nada:28 me__que:20
me__robaron:-26 me__una:32 me__your:-29 me_about:-23 me_again:-57 me_back:20 me_cobraron:84 me_da:-48 me_dejaron:68
me_escriban:22 me_escriben:42 me_for:47 me_gusto:69 me_hicieron:56 me_i:-18 me_in:-65 me_interesa:-22 me_it:20
me_la:-18 me_llame:-18 me_lo:-55 me_manden:-19 me_off:-57 me_puede:-19 me_puedo:-21 me_quedo:-19 me_rayaron:19
me_salio:48 me_so:81 me_that:19 me_tienen:31 me_today:24 me_trataron:28 me_up:-23 me_urge:-28 meant:-19 meh:43
mejor:-44 mensaje:76 mensaje_$:31 mensajes_$:-36 messed:23 mi:62 mi__de:38 mi_carro:25 mi_telefono:-20 mine:-19
minutes:26 mismo:52 mismo_dia:-20 molesto:32 money:44 money_$:32 money__tight:-20 money_is:-19 month_$:-27
month_is:56 more:93 more_texts:-22 morning:27 morning_$:46 mostrador:24 much_$:21 muy:77 muy_caro:-23 my:175
my__and:19 my__back:50 my__go:18 my__has:21 my__is:-41 my__refund:-42 my__was:38 my_bill:76 my_bumper:25 my_car:133
my_hood:18 my_hubcap:45 my_oil:44 my_rim:18 my_schedule:-23 my_seat:49 my_tax:-45 my_tires:23 nada:89 nada_$:108
nada__ustedes:-20 nadie:119 nadie_me:41 name:-24 necesito:-40 need:-99 need_to:-33 needed:28 never:23 never__me:27
never__to:-18 never_been:-28 never_called:30 new_$:24 next:-33 ni:49 ni_me:30 nine:24 no:22 no_$:-46 no__a:-23
no__at:-31 no__bien:67 no__con:22 no__de:-26 no__en:41 no__escriban:35 no__gusto:69 no__here:-29 no__lo:24 no__me:19
no__mensajes:-25 no__nada:30 no__puedo:-21 no__que:-24 no__texts:-24 no_complaints:-49 no_es:-29 no_hay:-18
no_issues:-22 no_it:62 no_me:46 no_more:-37 no_one:40 no_quede:44 no_quedo:83 no_quiero:-23 no_se:27 no_soy:-32
no_tengo:-30 no_y:35 no_you:55 nobody:135 noche:39 noche_$:45 noise_$:33 nomas:31 none:18 not:83 not__car:-36
not__it:23 not__me:-23 not__now:-19 not__with:94 not_a:-28 not_going:54 not_happy:97 not_my:-44 not_now:-18
not_really:52 not_the:-18 not_today:-21 not_worth:-24 nothing:63 nothing_$:99 now:-91 now_$:-37 nuevo:34 nuevo_$:40
number:-30 number_$:-22 numero:-52 numero_$:-41 nunca:71 nunca_me:65 o_menos:18 ocupo:-18 of:115 of_my:20 of_the:-21
off:49 off_$:114 off_your:-20 oh:81 oh__another:52 oh_great:36 oil:43 oil_$:21 oil_light:29 ojala:22 ok_but:-28
on_$:-18 on__phone:21 on__refund:43 on__way:-26 on_my:29 one:51 one_$:-23 only:-27 open:-40 or:-49 otro_taller:-36
out_$:-19 out__my:30 out_of:44 over:40 over_my:40 overcharged:25 overcharged_me:18 pague:32 paid:23 para:-62
para_que:-22 para_un:19 pasar:-25 pay_for:29 paying:-28 pedal:-23 pedi:18 people:86 peor:85 person:-18 persona:-32
persona_$:-19 pesimo:59 pesimo_servicio:25 phone_call:18 pieza:24 please_$:-43 plenty:22 plug:34 poner:60 por:19
por__el:22 por__me:58 por__no:-52 por_eso:-18 por_favor:-41 por_la:-18 por_nada:65 por_que:34 precio:-59 precio_$:-22
prefiero:-27 promised:32 puede:-24 pueden:-32 puedo:-47 pues:53 puro:34 put:30 put_me:-26 put_the:38 que:113
que__con:49 que__de:91 que__el:-23 que__ese:-23 que__lo:-26 que__mal:-41 que__malo:-27 que__otro:27 que_es:-50
que_falta:19 que_hora:-25 que_le:-61 que_me:-30 que_precio:-19 que_tan:-63 que_tanto:33 quede:94 quede_muy:71
quedo_bien:30 quick:-29 quienes:-23 quienes_son:-23 quieren:78 quiero:-18 quiero__de:-23 quiero__me:-25
quiero_nada:-22 quiero_que:-28 quote:19 quote_$:48 radio:34 rayaron:23 really:73 really_$:70 recibir:-18 reembolso:50
regreso:38 remind_me:-19 repair:41 respeto:34 ridiculous:28 right__you:24 right_after:24 right_now:-25 rip:97
ripped:66 robaron:-33 robo:26 rock:-39 room:19 rude:58 rude_$:49 runs:-18 sacar:18 said:56 sale:-50 salio:57
salir:-32 salir_$:-19 same:56 say:25 schedule:-32 scratch:-21 scratched:24 scratched_my:24 se:-50 se_me:-56 seat:51
seat_$:41 seats:21 see:-43 sell:33 send:-42 send_me:-27 senor_$:-18 sent:25 shop_$:-29 shop_is:27 si:-48 si__bien:-24
sick:77 siempre:57 sign:-21 sigue:66 sin:18 since:33 slow:19 so:47 some:23 someone__me:-19 someone__my:18 son:73
soon:-22 sorry:-20 soy:-60 soy__persona:-20 state:-18 still:95 still__about:32 still__on:43 still_waiting:43 stop:-46
stop_$:-23 stuff:61 stuff_$:34 su:29 sucio:24 sure:-25 take__off:-39 take_me:-39 talk:-19 taller:20 taller_$:40
tan:-18 tan__esta:-33 tan_mal:-22 tan_malo:-22 tanto:87 tax:-58 tax_refund:-44 tech:21 telefono:34 tell:-48
tell_me:-24 temprano:26 temprano_$:33 ten:27 tengo:-31 terrible:28 text:124 text__about:-18 text__again:-37 texted:20
texting_$:-21 texting_me:51 th:-42 th_$:-22 than:56 than_the:20 thank:-71 thank_you:-70 thanks_$:-36
thanks__nothing:91 thanks_for:59 that:19 that_$:-36 that__text:23 that__the:22 that_last:-18 the:40 the__and:-27
the__at:21 the__guy:-31 the__last:-22 the__light:20 the__oil:26 the__you:55 the_best:-35 the_bill:20 the_car:-35
the_dealer:-19 the_guy:19 the_keys:18 the_kid:21 the_last:30 the_light:-24 the_mall:-24 the_morning:61 the_noise:18
the_oil:19 the_phone:26 the_price:29 the_quote:50 the_repair:24 the_texts:-50 the_th:-39 the_work:44 then:-18
there__a:25 there_a:-29 there_with:19 they:20 thing_$:-23 thing_to:32 think_you:-21 third:60 third_time:27
this__the:40 this_a:-26 this_is:121 those:-25 three:62 three_times:18 through:46 tight:-23 til:-34 till:-32 time:96
time_i:39 time_it:22 time_you:31 times:79 tire:-26 to:24 to__back:29 to__for:26 to__me:39 to__my:34 to__shop:-21
to__the:22 to_come:19 to_sell:34 to_text:-25 to_you:-25 to_your:-22 todavia:22 todavia_no:-24 today:28 today_$:40
todo:-48 todo__dia:53 todo_bien:-37 todo_el:52 told:89 told_you:24 too:-39 too_$:-132 too__for:-24 too__texts:60
too_many:61 too_much:31 took:59 took_it:-29 total:-19 trabajo:27 trabajo_no:39 traffic:-21 traffic_is:-20 trataron:28
trato:21 treated:57 tres:54 trust:92 tuve:46 tuve_que:41 twice:109 twice_$:31 two:46 ultima:39 ultima__me:35
ultima_vez:33 un:68 un_dia:19 una:103 una__de:39 una__y:38 una_hora:37 uno:49 uno_$:31 unos:35 up_$:-37 urge:-28
ustedes:71 ustedes_$:50 uy:21 va:-18 vale_$:27 veces:111 veces_$:69 vender:31 venia:24 ver:36 vez:70 vez_$:-28
vez__dejaron:19 vez_me:40 vez_que:19 vibrates:-23 viernes:-29 visit:51 visit_$:21 voy_a:-36 voy_me:32 vueltas:19
wait:-66 waited:41 waiting:25 waiting_room:20 want_to:-24 was:130 was__and:41 was__last:-30 was__to:21 was_in:-27
was_just:46 was_rude:33 was_told:32 wasnt:39 way:59 way_$:-18 way_too:88 we:-40 week:27 week_$:-30 what__the:-38
what__you:-45 what__your:-32 what_a:120 what_do:-18 what_i:73 what_is:-67 what_time:-25 what_was:-26 when:-20
while:20 who:-29 who_is:-31 why:64 why__you:84 why_do:54 why_not:-29 will:-77 will__be:-18 with:49 with_$:22
with__i:35 with__texts:-38 with_a:26 wonderful:46 work:67 work_$:71 works:-19 worse:60 worse_$:61 worst:48 worth:-26
would:-39 wouldnt:21 wow:63 write:33 wrong:40 wrong_guy:-26 wrong_person:-19 wrote:28 y:177 y__me:55 y__no:28
y__ya:19 y_cuanto:-21 y_el:-19 y_le:-18 y_me:34 y_nadie:37 y_ni:55 y_no:19 y_ya:33 ya_$:20 ya__hicieron:-21
ya__lo:-25 ya__voy:32 ya_le:-38 ya_me:-47 yep:-32 yes:-70 yes_$:-29 yesterday:23 yo:-25 yo_no:-25 you:189 you_$:-137
you__a:23 you__for:-18 you__have:-25 you__i:-19 you__me:81 you__my:119 you__stop:-18 you__texting:58 you__the:-30
you__to:64 you_can:-30 you_charge:-34 you_charged:33 you_dont:-18 you_got:-46 you_guys:-18 you_had:32 you_have:-56
you_keep:68 you_left:86 you_never:48 you_open:-28 you_people:61 you_put:37 you_said:62 you_say:22 you_scratched:18
you_send:-20 you_take:29 you_text:69 your:97 your__and:38 your__desk:33 your__have:29 your_front:33 your_guy:28
your_hours:-18 youve:24
"""
