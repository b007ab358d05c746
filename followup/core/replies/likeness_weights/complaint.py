"""What speaks for and against `complaint`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "complaint"
BIAS = -162
WEIGHTS = """\
#aben:-22 #abla:-27 #acan:79 #acar:73 #acce:62 #acti:-53 #aded:-22 #adie:156 #adio:42 #ador:34 #ados:94 #affi:-30
#afte:45 #agar:-36 #ager:50 #agua:-35 #ahor:-25 #aile:-32 #aint:-103 #aite:58 #aiti:29 #aken:-24 #akes:-41 #aler:-37
#algo:53 #algu:-32 #alin:43 #alio:81 #alir:-46 #alle:88 #alls:-26 #ally:79 #alwa:42 #amad:-31 #amar:33 #amba:26
#amen:-27 #amos:-25 #anag:50 #anda:-27 #ande:-41 #ando:25 #ange:-33 #angi:83 #anic:-30 #anne:88 #anno:104 #anot:34
#answ:57 #anta:70 #apol:27 #appi:-24 #appo:37 #appy:83 #apun:-28 #aqui:-24 #arad:23 #arag:-28 #aran:37 #arca:-91
#arda:60 #aret:31 #arga:-23 #arge:69 #aria:-29 #arle:30 #arlo:-28 #arly:73 #arme:45 #aron:456 #arra:-43 #arro:22
#asar:-29 #asie:27 #aske:68 #asnt:52 #asse:-25 #asta:-64 #aste:-40 #asti:101 #asto:73 #atar:32 #ated:57 #aten:70
#ater:-23 #ates:-51 #atie:28 #ause:26 #auto:-51 #avia:28 #avor:-54 #ayar:27 #ayin:-41 #baby:22 #back:80 #baja:-39
#bank:-49 #baro:-65 #bate:-22 #bcap:64 #bein:110 #best:-53 #bien:83 #bill:259 #blan:-30 #blar:-36 #bles:-24 #body:164
#bols:68 #boni:58 #boug:-23 #brak:-88 #bran:-40 #brar:144 #brat:-34 #brok:-72 #buck:38 #bump:24 #burn:23 #busc:-23
#busi:148 #cada:64 #call:-39 #came:42 #cans:78 #cant:-104 #cara:80 #card:28 #carl:43 #caro:-82 #caus:26 #ccep:52
#ccio:-26 #cell:-26 #cepc:50 #cept:39 #cesi:-62 #chan:50 #char:84 #chec:-50 #chev:-22 #choo:-23 #chos:65 #cien:-45
#ciga:43 #cion:58 #cios:32 #cita:-23 #cked:49 #cker:46 #cket:31 #clas:32 #clie:25 #cobr:116 #code:-43 #come:85
#comi:-30 #comp:-144 #conf:139 #cont:57 #cord:26 #corr:-29 #cort:-35 #cosa:24 #cost:-108 #crib:60 #croo:32 #ctiv:-50
#cual:-24 #cuan:-137 #cuen:59 #culo:35 #culp:23 #cupo:-22 #darm:-29 #daro:92 #davi:29 #dawn:22 #deal:-25 #deja:62
#deje:-40 #dema:92 #dent:-30 #derf:66 #desd:55 #desk:61 #deso:107 #devo:91 #dias:66 #dicu:36 #didn:147 #dier:55
#diga:-39 #dije:108 #dine:33 #ding:32 #dios:-24 #dirt:54 #disa:70 #dobl:29 #doll:33 #dond:-26 #done:-28 #door:43
#dred:26 #driv:-84 #drov:22 #dule:-32 #dura:-23 #duro:47 #eale:-34 #eall:103 #eant:-28 #earl:62 #ease:77 #eate:57
#eats:25 #ecal:-26 #ecep:43 #eces:80 #echa:-30 #ecio:-50 #edal:-32 #edan:-25 #eded:39 #eden:-44 #edes:84 #edul:-32
#eede:39 #eels:-23 #eemb:67 #efie:-36 #efon:41 #egan:38 #egre:71 #egun:37 #eing:118 #ejar:69 #ejem:-22 #ejor:-56
#elef:41 #emas:133 #embo:67 #emin:-35 #empr:103 #enca:-28 #enci:36 #enco:-63 #ende:44 #endi:-30 #enes:-36 #engo:-44
#enia:24 #enla:49 #enos:50 #ensa:128 #ensi:-25 #enta:66 #ento:34 #enty:35 #eopl:116 #epai:58 #epci:50 #epta:51
#eran:64 #erch:29 #erda:42 #erdi:43 #ered:34 #eren:93 #eres:-55 #erfu:66 #erie:54 #erio:85 #ermi:-22 #erne:-41
#eron:257 #eros:122 #erri:38 #erso:-57 #eryt:-70 #esar:65 #esco:22 #escr:66 #esda:-29 #esde:55 #eset:53 #esim:74
#esit:-67 #esor:102 #espe:156 #esse:123 #essu:27 #esta:-31 #esto:31 #estu:35 #ethi:22 #etie:28 #etti:50 #evad:-24
#even:27 #ever:109 #evis:-27 #evol:91 #expe:23 #expl:36 #extr:26 #falt:54 #fast:30 #favo:-54 #feel:43 #fend:22
#ffic:-22 #fier:-38 #filt:53 #fine:-38 #five:44 #fixe:50 #fono:43 #fore:74 #forg:86 #form:105 #four:59 #fren:-42
#frid:-23 #from:-28 #fter:45 #fund:-26 #gado:-30 #game:-34 #gara:-33 #gare:28 #garo:36 #garr:-28 #gast:50 #gave:37
#genc:-25 #gent:22 #gett:66 #ging:109 #give:-38 #gone:33 #good:-101 #grea:131 #gres:72 #gros:97 #gual:58 #guen:-25
#gues:-26 #guie:-23 #guna:-26 #gunt:47 #gust:69 #guys:-36 #habl:-40 #hace:-42 #hang:55 #hank:-75 #happ:59 #harg:85
#hast:-54 #heat:-25 #hech:23 #heck:-42 #hedu:-32 #hese:-22 #heve:-22 #high:28 #hile:31 #hink:-29 #hird:81 #hizo:-22
#hock:43 #hoev:28 #hood:35 #hool:-22 #hora:118 #hori:-30 #hose:-27 #hour:72 #hree:77 #hrou:68 #hubc:64 #huma:-28
#hund:25 #hung:28 #hurs:-35 #iado:96 #iben:57 #ibir:-32 #ible:26 #ibra:-44 #icad:22 #icio:-34 #icul:35 #idad:29
#iday:-31 #idea:-42 #idic:36 #idnt:147 #iemp:70 #ienc:31 #iene:-53 #iere:93 #iern:-40 #iero:148 #ieza:46 #igar:43
#ight:39 #igua:57 #igue:84 #ijer:54 #iled:-28 #ills:67 #imes:101 #ince:27 #inco:93 #inde:-30 #inea:40 #ined:42
#iner:41 #infl:22 #inst:-28 #intm:-23 #ints:-51 #inut:54 #invo:34 #iona:24 #ione:-22 #ious:91 #ippe:138 #irad:-23
#isap:72 #ised:56 #isit:140 #ismo:56 #ista:-45 #iste:50 #isto:-25 #ited:59 #itin:35 #iven:-31 #ixed:45 #jaja:-44
#jaro:87 #jero:42 #june:-30 #junt:-30 #just:52 #keep:32 #keys:35 #kind:-35 #king:-38 #know:-64 #lado:22 #lain:-107
#laro:41 #lars:26 #last:124 #ldnt:52 #lefo:41 #left:182 #lega:43 #lema:35 #leme:-25 #less:-23 #lest:64 #leva:-37
#levo:40 #lgun:-23 #lied:54 #ligh:-28 #line:38 #list:-65 #live:-44 #llar:33 #lled:109 #lleg:35 #ller:25 #long:-29
#look:-56 #loos:45 #lous:36 #ltas:23 #ltim:56 #lvan:23 #lvie:78 #lway:42 #mada:-32 #made:36 #make:39 #mala:57
#mall:-40 #malo:-51 #mana:47 #mand:-51 #mani:47 #mann:90 #many:114 #marc:-88 #mber:-42 #mbol:66 #mbre:-23 #mean:-33
#mejo:-56 #meno:22 #mens:120 #ment:-86 #mero:-83 #mess:23 #meth:22 #mind:-47 #mine:-30 #minu:45 #mise:47 #mism:50
#mist:-26 #mole:64 #mond:-23 #mone:78 #moot:-27 #more:106 #morn:23 #most:23 #move:-23 #mpla:-123 #mple:27 #mpra:31
#mpre:162 #much:71 #nada:121 #nadi:156 #nage:50 #nail:-28 #name:-51 #naro:58 #ncio:53 #ncon:34 #ndan:40 #nday:-25
#nden:-50 #nder:90 #ndre:26 #nece:-63 #need:-88 #nero:38 #ners:89 #next:-42 #nfla:22 #nfor:89 #nfun:-34 #ngan:24
#nger:24 #ngin:84 #nigh:66 #nine:30 #nito:40 #nner:88 #nnoy:105 #nobo:173 #noch:49 #noma:43 #none:22 #noth:119
#noyi:96 #nsaj:114 #nsan:47 #nswe:57 #ntac:-38 #ntad:33 #ntar:27 #ntas:35 #nted:74 #nter:23 #ntes:153 #ntis:-25
#ntme:-23 #ntra:-79 #ntre:22 #nuev:26 #numb:-36 #nume:-57 #nunc:95 #nute:28 #nuts:-22 #nvoi:35 #obar:-41 #oble:37
#obod:173 #obra:89 #obro:25 #oche:45 #ocke:99 #ocup:-22 #odav:29 #oday:37 #oeve:22 #oice:37 #oint:50 #ojal:27
#oles:50 #olla:30 #olog:27 #olso:67 #olvi:81 #omas:39 #omat:-22 #omer:-22 #omis:47 #ompl:-120 #onal:24 #onda:-24
#onde:43 #oned:31 #oner:75 #oney:52 #onfi:85 #onfu:-36 #onit:54 #only:-38 #onta:-35 #onte:165 #onth:22 #ontr:-73
#oose:44 #ooth:-27 #open:-59 #ople:121 #oras:97 #orde:83 #orev:93 #orge:25 #orgo:61 #orit:-26 #orks:-26 #orme:90
#orni:22 #orra:-22 #orry:-26 #orse:80 #orst:63 #orth:-40 #oser:83 #osto:-28 #ostr:30 #otal:-35 #othi:85 #ough:25
#ould:-56 #ound:-39 #ours:57 #ousl:76 #ouve:30 #over:69 #owns:34 #oyin:96 #paga:23 #paid:26 #pair:60 #para:-68
#pare:26 #pasa:-44 #pass:-32 #payi:-37 #pcio:45 #peda:-33 #pedi:22 #pens:-47 #peop:116 #peor:122 #pera:81 #perd:73
#peri:33 #pers:-56 #pesi:74 #peto:43 #piez:46 #ping:-33 #plai:-104 #plen:41 #plug:53 #poin:44 #poke:35 #polo:27
#pone:73 #porq:33 #pped:111 #ppie:-24 #ppoi:37 #pran:34 #prec:-48 #pref:-38 #preg:47 #pren:-42 #pres:134 #pret:29
#pric:-33 #prin:28 #prom:64 #pued:-140 #pues:88 #pull:-28 #puro:83 #qued:126 #quej:-25 #quer:26 #quic:-38 #quin:-24
#quit:-28 #quot:33 #rade:-26 #radi:46 #rado:31 #raff:-30 #rage:-22 #rain:49 #rake:-86 #rand:69 #rano:29 #raro:84
#rata:45 #rato:26 #raya:31 #rcar:-55 #rcha:22 #rdar:81 #rday:22 #rden:75 #rder:33 #real:122 #reas:81 #reat:135
#reca:-28 #rece:25 #reci:-47 #rect:24 #reem:67 #refi:-36 #rega:25 #regr:71 #regu:52 #remi:-36 #remo:-24 #rend:-44
#reno:-31 #rent:23 #repa:59 #rero:25 #rese:23 #reso:57 #resp:62 #ress:111 #rest:-26 #rett:38 #reve:84 #rful:66
#rgad:-22 #rged:129 #rget:25 #rgot:61 #ribe:54 #ribl:46 #rice:-22 #ridi:35 #righ:29 #rint:32 #rios:31 #riou:73
#ripp:133 #rita:-28 #rite:51 #rito:24 #rive:-82 #rmis:-24 #rned:27 #rnes:-37 #roba:-37 #robo:26 #rock:-59 #roke:-72
#romi:47 #rong:54 #rook:32 #rose:85 #rote:36 #roug:60 #rran:-24 #rrib:45 #rrie:-34 #rson:-57 #rtie:40 #rude:74
#ruid:-26 #runs:-26 #rust:129 #ryin:53 #ryth:-70 #saca:150 #said:73 #saje:115 #sale:-54 #salg:-23 #sali:46 #same:75
#sapp:72 #saro:55 #scam:-41 #sche:-32 #scho:-22 #scon:26 #scri:54 #sday:-42 #seat:90 #sell:54 #send:-53 #seno:-22
#sent:57 #seri:95 #sero:67 #shak:-24 #shoc:43 #sick:111 #siem:77 #sien:29 #sign:-41 #sigu:69 #sill:27 #simo:83
#sinc:43 #sing:31 #sito:-55 #sits:57 #sked:69 #smoo:-27 #sold:80 #sona:-38 #soon:-32 #sorr:-24 #spec:-28 #sper:102
#spet:50 #spok:35 #sque:-26 #ssed:102 #sses:-22 #ssur:27 #stak:-25 #stea:-24 #sted:69 #sten:26 #ster:52 #stic:79
#stil:127 #stop:-82 #stra:24 #stri:50 #stuf:86 #stuv:36 #suci:30 #sues:-33 #swap:-25 #swer:57 #tabl:39 #tact:-38
#take:-42 #tall:31 #tand:25 #tant:118 #tard:52 #tari:-22 #tarm:26 #taro:40 #tart:-38 #tate:-33 #tche:47 #tech:41
#tede:84 #tele:34 #tell:-68 #tenc:70 #teng:-59 #tent:26 #terd:30 #tere:-52 #terr:38 #test:127 #teve:-26 #text:151
#that:27 #then:-24 #ther:38 #thes:-22 #thir:81 #thos:-33 #thre:74 #thro:60 #thur:-35 #tier:85 #tigh:-27 #till:83
#tima:32 #time:199 #ting:83 #tira:-29 #tire:-50 #tive:-34 #tmen:-24 #toda:78 #todo:-60 #told:111 #toma:-26 #tome:-25
#took:77 #tota:-35 #traf:-33 #trai:-37 #trar:-64 #tras:-38 #trat:71 #trea:81 #tres:62 #trip:41 #trus:129 #tter:-41
#ttin:56 #tues:-27 #tuff:86 #turn:-25 #tuve:68 #tuvo:25 #twic:140 #uant:-118 #ubca:64 #ucho:70 #ucio:28 #ucks:37
#ueda:-32 #uede:53 #uedo:-39 #uelv:27 #uena:-26 #uent:56 #ueri:31 #uess:-22 #ueve:-28 #uevo:48 #ught:-23 #uick:-38
#uien:-48 #uier:32 #uldn:52 #ulou:36 #ulpa:31 #ulti:53 #uman:-28 #umbe:-36 #umer:-40 #umpe:30 #unca:92 #unde:-23
#undr:25 #unos:50 #unta:26 #unte:59 #uote:33 #urge:-49 #usca:-23 #usin:-24 #usly:76 #usta:-25 #uste:76 #usto:88
#utes:34 #vece:146 #vend:35 #veni:33 #vent:-29 #verc:29 #very:-34 #vibr:-43 #viej:23 #vier:58 #visa:26 #visi:125
#viso:-27 #voic:38 #volv:98 #vuel:41 #want:-30 #wasn:54 #ways:41 #well:-23 #were:33 #when:-42 #whil:31 #whoe:28
#wice:140 #will:-98 #with:61 #wond:65 #work:53 #wors:144 #wort:-38 #woul:-24 #writ:46 #wron:54 #wrot:35 #xted:25
#yaro:27 #yest:30 #ying:95 #your:108 #youv:30 #ythi:-68 %again_later:-27 %again_later%agree:53 %again_later%away:-89
%again_later%bad:91 %again_later%bring:53 %again_later%busy:-66 %again_later%car_part:110 %again_later%do_it:63
%again_later%doubt:32 %again_later%elsewhere:42 %again_later%family:-33 %again_later%gone_car:43
%again_later%leave_me:-24 %again_later%machine:38 %again_later%money:88 %again_later%on_way:-49
%again_later%opening:54 %again_later%pay_day:-32 %again_later%phone:63 %again_later%refuse:87 %again_later%season:-43
%again_later%shift_it:53 %again_later%staff:37 %again_later%start_again:24 %again_later%thanks:54 %again_later%who:52
%again_later%wrong_one:146 %agree:-191 %agree%away:48 %agree%bad:93 %agree%busy:-40 %agree%call_off:51
%agree%car_part:-57 %agree%doubt:-58 %agree%elsewhere:30 %agree%fails:25 %agree%how_long:55 %agree%leave_me:58
%agree%message:86 %agree%money:62 %agree%noise:-27 %agree%on_way:68 %agree%opening:33 %agree%phone:-33
%agree%question:127 %agree%refuse:207 %agree%staff:-48 %agree%start_again:-30 %agree%thanks:-65 %away%bad:-40
%away%car:-31 %away%car_part:-24 %away%do_it:-22 %away%pay_day:-22 %away%question:-61 %away%refuse:-23 %bad:566
%bad%bring:-46 %bad%busy:38 %bad%call_off:-60 %bad%car:35 %bad%car_part:95 %bad%do_it:77 %bad%doubt:46
%bad%elsewhere:81 %bad%family:91 %bad%gone_car:34 %bad%how_long:53 %bad%leave_me:26 %bad%lift:46 %bad%meaning:-182
%bad%message:25 %bad%money:62 %bad%noise:-33 %bad%odometer:26 %bad%phone:76 %bad%place:-24 %bad%refuse:-36
%bad%season:28 %bad%shift_it:39 %bad%staff:272 %bad%start_again:94 %bad%thanks:55 %bad%wrong_one:25 %bring:-29
%bring%busy:-72 %bring%call_off:-31 %bring%car:29 %bring%do_it:61 %bring%doubt:33 %bring%elsewhere:-38
%bring%how_long:45 %bring%leave_me:-31 %bring%on_way:78 %bring%opening:33 %bring%refuse:-36 %bring%shift_it:-44
%bring%start_again:26 %bring%wrong_one:119 %busy:51 %busy%car_part:-23 %busy%elsewhere:-26 %busy%fails:73
%busy%leave_me:-27 %busy%message:40 %busy%phone:-24 %busy%refuse:111 %busy%shift_it:-32 %busy%staff:-36
%busy%thanks:-29 %call_off:-79 %call_off%car:-33 %call_off%car_part:23 %call_off%do_it:-87 %call_off%doubt:64
%call_off%elsewhere:68 %call_off%fails:135 %call_off%how_long:78 %call_off%lift:22 %call_off%message:-181
%call_off%noise:42 %call_off%odometer:28 %call_off%on_way:38 %call_off%phone:73 %call_off%question:162
%call_off%refuse:47 %call_off%shift_it:48 %call_off%staff:88 %call_off%start_again:23 %call_off%who:45
%call_off%wrong_one:65 %car:-44 %car%do_it:33 %car%fails:-54 %car%gone_car:-104 %car%how_long:22 %car%lift:-28
%car%odometer:32 %car%on_way:34 %car%pay_day:-24 %car%question:-24 %car%refuse:-129 %car%start_again:41
%car_part%do_it:29 %car_part%fails:-83 %car_part%how_long:28 %car_part%leave_me:-40 %car_part%lift:25
%car_part%meaning:-31 %car_part%money:-23 %car_part%noise:-32 %car_part%odometer:-25 %car_part%phone:30
%car_part%place:-26 %car_part%question:-57 %car_part%refuse:112 %car_part%smoke_smell:-28 %car_part%staff:127
%car_part%thanks:66 %car_part%who:30 %car_part%wrong_one:60 %do_it:-61 %do_it%elsewhere:-105 %do_it%family:-23
%do_it%gone_car:-47 %do_it%how_long:104 %do_it%leak:-30 %do_it%lift:37 %do_it%meaning:34 %do_it%message:-71
%do_it%on_way:27 %do_it%opening:23 %do_it%place:23 %do_it%refuse:177 %do_it%season:-32 %do_it%shake:22
%do_it%shift_it:-54 %do_it%thanks:37 %do_it%who:40 %doubt:23 %doubt%gone_car:49 %doubt%how_long:69 %doubt%message:-75
%doubt%money:74 %doubt%on_way:25 %doubt%question:23 %doubt%shift_it:60 %doubt%staff:-24 %doubt%start_again:-24
%elsewhere%family:-26 %elsewhere%message:48 %elsewhere%money:145 %elsewhere%on_way:-31 %elsewhere%pay_day:-25
%elsewhere%question:123 %elsewhere%refuse:-114 %elsewhere%shift_it:52 %elsewhere%start_again:-34
%elsewhere%wrong_one:-60 %fails:-121 %fails%how_long:-42 %fails%message:-53 %fails%refuse:110 %fails%wrong_one:-42
%family:-34 %family%money:53 %family%shift_it:-41 %gone_car:-98 %gone_car%on_way:30 %gone_car%question:77
%gone_car%thanks:26 %gone_car%wrong_one:56 %how_long:58 %how_long%money:-48 %how_long%on_way:58 %how_long%opening:33
%how_long%phone:32 %how_long%question:-48 %how_long%refuse:48 %how_long%shift_it:22 %how_long%wrong_one:58
%leak%refuse:29 %leave_me:-35 %leave_me%message:-37 %leave_me%on_way:55 %leave_me%pay_day:86 %leave_me%question:66
%leave_me%refuse:-26 %leave_me%season:79 %leave_me%staff:33 %leave_me%start_again:-34 %lift:54 %lift%odometer:26
%lift%on_way:-32 %lift%opening:83 %lift%pay_day:34 %lift%phone:25 %lift%question:-44 %lift%refuse:36 %machine:46
%machine%meaning:-27 %machine%message:25 %machine%refuse:44 %meaning:-160 %meaning%money:32 %meaning%on_way:74
%meaning%phone:-64 %meaning%question:-50 %meaning%refuse:-68 %message:127 %message%on_way:238 %message%pay_day:72
%message%phone:-45 %message%question:38 %message%refuse:-104 %message%season:93 %message%shift_it:78
%message%start_again:-232 %message%thanks:-24 %message%who:-46 %message%wrong_one:-31 %money:179 %money%odometer:147
%money%on_way:-46 %money%pay_day:112 %money%phone:36 %money%refuse:-30 %money%shift_it:114 %money%staff:47
%money%start_again:69 %money%thanks:144 %money%wrong_one:73 %noise:-82 %noise%question:-26 %noise%refuse:66
%odometer:60 %odometer%pay_day:41 %odometer%phone:-43 %odometer%question:-49 %odometer%refuse:55 %odometer%staff:-25
%odometer%start_again:47 %on_way:28 %on_way%opening:33 %on_way%phone:47 %on_way%question:38 %on_way%staff:29
%opening:-40 %opening%question:-54 %opening%wrong_one:30 %pay_day%phone:25 %pay_day%shift_it:-39 %phone:-32
%phone%question:-91 %phone%refuse:32 %phone%shift_it:-51 %phone%start_again:52 %phone%who:95 %place:-105
%place%question:-28 %place%refuse:32 %place%staff:-30 %place%wrong_one:66 %question:-34 %question%refuse:-25
%question%shift_it:91 %question%start_again:-56 %question%thanks:32 %question%who:-84 %question%wrong_one:44
%refuse:-28 %refuse%season:22 %refuse%shift_it:-57 %refuse%staff:135 %refuse%start_again:106 %refuse%thanks:61
%refuse%who:-31 %season%shift_it:-49 %season%thanks:24 %shake:-95 %shift_it:-50 %shift_it%start_again:-43
%shift_it%thanks:44 %smoke_smell:-66 %staff:74 %staff%thanks:-56 %start_again:-102 %start_again%who:69
%start_again%wrong_one:60 %who:-73 %wrong_one:-39 @?:-239 @after_visit:249 @after_visit_cant_complain:-53
@after_visit_not_really:58 @car:-87 @confirm:-63 @day:-90 @nothing:28 @offers:-182 @reading:-39 @time:-128
@walk_in:-38 ^_a:-90 ^_al:-43 ^_all:-27 ^_and:-26 ^_another:51 ^_any:-40 ^_are:-57 ^_bank:-33 ^_been:31 ^_brakes:-34
^_cada:28 ^_call:-35 ^_can:-139 ^_cancel:29 ^_cant:-73 ^_car:-46 ^_como:-73 ^_cost:-31 ^_could:-36 ^_cuando:-29
^_cuanto:-99 ^_de:-108 ^_did:-42 ^_do:-84 ^_enough:-54 ^_esta:-47 ^_everything:-54 ^_fine:-31 ^_forget:22
^_gracias:40 ^_great:83 ^_have:-24 ^_hey:-31 ^_how:-77 ^_i:50 ^_im:-35 ^_in:-22 ^_is:-149 ^_it:-77 ^_la:76 ^_last:79
^_let:-51 ^_llevo:47 ^_lo:-34 ^_mas:22 ^_meh:60 ^_my:-103 ^_need:-25 ^_no:37 ^_nobody:32 ^_not:42 ^_nunca:86 ^_oh:105
^_oil:-35 ^_one:83 ^_only:-22 ^_otro:100 ^_pesimo:32 ^_please:29 ^_por:29 ^_prefiero:-31 ^_pues:60 ^_puro:53 ^_que:26
^_quede:92 ^_quedo:-47 ^_sale:-28 ^_salio:42 ^_scratch:-38 ^_se:-39 ^_si:-74 ^_siempre:81 ^_sin:-29 ^_son:93
^_still:66 ^_text:-41 ^_thank:-30 ^_thanks:78 ^_that:-27 ^_the:161 ^_this:134 ^_todo:-116 ^_too:-39 ^_took:28
^_ustedes:34 ^_uy:30 ^_very:35 ^_voy:-23 ^_we:-27 ^_when:-24 ^_who:-25 ^_why:106 ^_wow:50 ^_y:-59 ^_ya:-117 ^_yep:-42
^_yes:-63 ^_yo:-39 ^_you:142 ^_your:159 a:92 a_$:-36 a__car:29 a__de:25 a__for:-29 a__hora:-26 a__is:93 a__off:141
a__time:-29 a__under:27 a_car:-28 a_good:-28 a_la:-44 a_mechanic:-22 a_month:61 a_price:-22 a_que:-46 a_rip:139
a_week:115 about_the:31 after:56 after_the:22 after_you:36 agua:-24 ahorita:-29 al:-79 al_cien:-34 algo:71 all:30
all_$:-59 all__my:55 all_day:39 all_good:-44 all_over:58 already_$:-31 always:42 am:-32 and:214 and__dont:-35
and__it:-25 and__one:29 and__the:22 and_did:24 and_how:-24 and_it:58 and_nobody:68 and_please:23 and_what:-23
and_you:38 ando:-31 annoying:96 annoying_$:95 another:34 another_bill:44 answer:25 antes_$:43 any:-85
appreciate_it:29 are:-89 are_your:-23 arreglaron:22 as:-80 as_well:-41 ask:28 ask_me:-39 asked:69 asked_for:57 at:58
at_$:-33 at__counter:62 at__the:72 at_all:-35 at_and:-25 at_in:74 at_work:24 at_your:42 ate:23 atencion:62
aviso_$:-23 baby:24 back:66 back_$:62 back__for:23 back_on:22 bad:-182 bad_$:-144 bank:-48 be:-41 be_better:-24
be_there:-23 being:110 best:-53 best_$:-50 bien:47 bien_el:42 bill:177 bill_$:47 bill_was:53 bonito:46 bought:-23
brake:-24 brakes:-62 brakes_feel:-31 broke:-55 bucks:39 bumper:31 but:-112 but_the:-40 but_what:-24 by:-57 by_the:-49
cada:50 call:-87 call_me:-71 called:78 called__back:66 called_me:62 came:48 came_back:-38 came_on:27 can:-229
can__send:-24 can_i:-50 can_you:-101 cant:-96 cant_complain:-57 cap:35 car:91 car__i:24 cara:67 card:30 care_of:-24
caro:-50 caro_$:-26 carro_$:37 changed_my:29 changing:88 charge:-48 charge_for:-29 charged:100 charged__for:30
charged_me:47 check:-33 chiste:22 cien:-35 cien_$:-32 clientes:26 cobran:-32 cobran_$:30 cobran_por:-46 cobraron:108
cobraron__mas:33 cobraron_de:33 cobro:25 code:-43 come:91 come__it:67 come_back:28 come_in:47 coming:-29 como__mi:-24
como__que:-23 como_me:31 complain:-57 complain_$:-53 complaints:-70 con:167 con__que:36 con__trabajo:24 con_el:67
con_la:46 con_lo:25 con_los:-30 con_un:29 con_ustedes:72 contact:-24 contento:30 contesta:68 cost:-66 cost_$:-27
costo:-26 could:-58 could_you:-56 couldnt:28 couldnt_be:29 count:-25 count_me:-22 counter:67 cuanto:-144
cuanto__el:-37 cuanto_me:-45 cuenta:67 cuenta_$:22 da:-77 dawn:22 day:-43 day_$:-48 days:26 de_$:-33 de__llanta:53
de__llantas:-22 de__manana:32 de__no:-27 de_aceite:22 de_dinero:-23 de_la:54 de_las:-42 de_mas:48 de_que:-51
de_regreso:43 dealer:-32 dejaron:94 dejaron_el:46 del:-27 desde:55 desde_que:46 desk:61 devolvieron:78 dias:66
dias_$:26 did:-77 did_my:32 did_that:-36 did_you:-57 didnt:147 dije:54 dijeron:43 dinero:34 dios:-22 do:-168
do__charge:-30 do__guys:-24 do__keep:75 do__own:-27 do_i:-28 do_my:-27 do_you:-43 doble:28 dollars:26 donde:-25
done:-26 dont__me:76 dont__you:90 dont__your:-68 dont_have:-37 dont_know:-34 dont_text:64 door:38 door_$:22 dos:109
dos_veces:97 down_$:22 down_on:-47 drive:-49 drive_$:-22 drove:22 duro:47 early:68 early_$:59 el:65 el__a:-26
el__dia:-25 el__todo:34 el__y:38 el_carro:38 el_dia:53 el_encargado:-22 el_gerente:24 el_mismo:28 el_numero:-51
el_otro:-39 el_servicio:-26 el_telefono:75 el_trabajo:80 el_viernes:-26 else:-28 en__noche:60 en__taller:-37
en_otro:-38 encargado:-22 encontraron:-63 enough_$:56 entregaron:25 era:30 es:-67 es_$:-44 es__mismo:28 es_el:-24
es_un:50 escriban:23 escriban_$:-34 escriben:58 ese:-111 ese_servicio:-46 eso:-66 eso_$:-23 esperando:69 espere:43
esta:-153 esta_$:-42 esta_muy:-35 estan:-27 estuvo:26 even:32 ever:53 every:45 every__i:52 every_time:43
everything:-70 everything_was:-46 falta:25 falta_de:38 far:-35 favor:-54 favor_$:-46 feel:60 fine:-38 fine_$:-41
first_$:-27 five:44 five_$:25 fix:33 fix_it:25 fixed:50 for:95 for__i:33 for__oil:25 for_a:34 for_an:23 for_me:-74
for_nothing:125 for_that:34 forever:93 forget:25 forget__i:23 forget_it:25 forgot:61 forgot_to:68 four:36 freno:-37
from:-28 front_desk:50 fue__que:-29 fue_lo:-29 fui:62 garage:-28 gave:37 gave_me:23 gente:28 get:-91 get_a:-30
get_my:-43 get_paid:-23 getting:66 give:-36 give__a:-22 give_me:-38 going_to:-48 gone:33 good:-100 good_$:-36
got__wrong:-39 got_a:-32 got_it:24 got_my:34 got_the:-42 got_to:-22 gracias_$:-58 gracias__nada:75 gracias_por:74
grease:63 grease__over:49 grease_all:49 greasy:22 great:47 great_$:-46 great__bill:44 great__you:23 great_another:44
grosero:33 guess:-22 gusto:101 guy:-24 guy_$:-38 guy__the:23 guys:-36 guys_$:43 guys_do:-24 hablar:-47 hablar_con:-42
had:77 had_to:52 happier:-24 happy:78 has:39 hasta:-54 hasta_que:-28 hate:29 have__wrong:-32 have_a:-29 have_been:31
have_my:-26 have_never:-24 have_no:37 have_the:-27 hay:-43 he:-56 he_llevado:-23 here:-40 here_$:-54 hey:-33 high:-30
hit:-22 hizo:-22 hood:35 horas:97 horas_$:47 hours:62 how__was:47 how_bad:-30 how_come:37 how_i:63 how_many:-34
how_much:-35 hoy:24 hubcap:64 human:-23 hundred:26 i:132 i__a:-50 i__drive:-22 i__for:28 i__know:-26 i__my:-79
i__never:-45 i__that:24 i__to:-30 i__told:39 i__with:25 i_am:-22 i_asked:24 i_came:30 i_come:52 i_do:-32 i_feel:71
i_get:-67 i_got:60 i_have:41 i_left:57 i_live:-35 i_need:-48 i_never:-22 i_paid:47 i_said:-29 i_think:-39 i_told:25
i_want:24 i_was:166 i_will:-26 idea:-42 if_i:-27 if_you:25 igual:60 igual_$:46 ill:-50 im:44 im__of:58 im__work:45
im_at:48 im_not:-23 in_$:-53 in__a:29 in__and:55 in__car:43 in__is:50 in__morning:85 in_a:-45 in_another:-39 in_it:73
in_june:-32 in_my:27 in_the:57 interesa:-28 interesa_$:-24 invoice:35 is:-23 is_$:-58 is__a:-98 is__bad:-30
is__bill:-26 is__i:27 is__new:55 is_getting:75 is_it:-63 is_not:-22 is_something:56 is_still:28 is_that:-38
is_there:-45 is_this:-55 is_tight:-30 is_wrong:25 is_your:-29 issues:-33 it:41 it_$:-45 it__a:-22 it__in:33
it__ok:-45 it__to:-30 it_back:-25 it_in:-28 it_is:132 it_still:55 it_was:-23 it_you:31 jaja:-34 jala:-23 job:-23
june:-30 june_$:-35 just:44 keep:54 keep__me:70 keep_texting:68 key:25 keys:35 know:-61 know_you:-37 la:130 la__es:29
la__no:36 la__que:-25 la__vez:130 la_atencion:44 la_cara:67 la_cuenta:56 la_lista:-26 la_llamada:-25 la_llanta:37
la_manana:23 la_noche:67 la_otra:71 la_semana:-27 la_tarde:-27 la_ultima:49 la_verdad:32 las:-35 las__la:38 las_de:45
las_llantas:-32 last:122 last__and:46 last__you:52 last_month:-32 last_night:-47 last_time:210 last_week:-70
late_$:-39 later:-49 later_$:-28 le:-195 le__el:-24 le_hicieron:-61 left:182 left_$:-27 left_a:88 les:69 let:-67
let_me:-48 lied:46 light_$:25 light__on:26 list:-36 list_$:-40 lista:-28 live:-37 live_in:-32 llamada:-30
llamada_$:-36 llanta:25 llanta_$:39 llantas:-32 llantas_$:-29 llevado:-23 llevo:40 lo:-101 lo__a:-35 lo__ahi:27
lo__con:61 lo__el:-32 lo__en:-30 lo__me:27 lo_hicieron:-57 lo_mismo:36 lo_que:45 lo_robaron:-32 lol:-60 lol_$:-25
long:-28 look_at:-24 loose:45 loose_$:50 los:-112 los_mensajes:-72 lost_my:47 lot:54 made:36 makes:44 makes_the:55
mal_$:-76 mal_el:-31 mall:-36 malo:-50 manager:51 manana_$:-31 mandan:39 manden:-36 manden_nada:-35 manners:80
many:114 many_texts:151 mas:53 mas__menos:27 mas_mensajes:-28 mas_o:27 mas_que:35 me:123 me_$:-94 me__algo:82
me__como:46 me__el:62 me__en:32 me__esperar:37 me__hablar:-36 me__hicieron:-45 me__horas:23 me__im:42 me__in:37
me__june:-39 me__la:57 me__mal:46 me__mas:-61 me__mensajes:60 me__my:-23 me__nada:44 me__robaron:-37 me__una:42
me__your:-37 me_about:-34 me_again:-79 me_back:27 me_cobraron:99 me_da:-68 me_dejaron:84 me_escriban:32
me_escriben:58 me_for:58 me_gusto:97 me_hicieron:72 me_i:-23 me_in:-89 me_interesa:-28 me_it:24 me_la:-22 me_late:-27
me_llame:-23 me_lo:-71 me_manden:-28 me_off:-77 me_puede:-24 me_pueden:-24 me_puedo:-26 me_quede:-26 me_quedo:-25
me_rayaron:23 me_salio:66 me_so:120 me_that:23 me_tienen:38 me_today:29 me_trataron:34 me_up:-27 me_urge:-40
meant:-26 meh:58 mejor:-55 menos:22 mensaje:105 mensaje_$:41 mensajes_$:-55 messed:26 mi:87 mi__de:55 mi_carro:30
mi_telefono:-27 mine:-24 minutes:34 mismo:67 mismo_dia:-25 molesto:40 money:59 money_$:44 money__tight:-31
money_is:-30 month:25 month_$:-35 month_is:80 more:126 more_$:-22 more_texts:-31 morning:37 morning_$:63 mostrador:30
much_$:28 must_have:-22 muy:101 muy_caro:-32 my:205 my__and:22 my__back:72 my__has:28 my__in:26 my__is:-56
my__refund:-62 my__was:52 my_bill:110 my_bumper:32 my_car:183 my_hubcap:61 my_oil:63 my_refund:26 my_schedule:-34
my_seat:62 my_tax:-66 my_tires:28 nada:117 nada_$:142 nada__ustedes:-27 nadie:156 nadie_me:51 name:-33 necesito:-54
need:-128 need_to:-42 needed:39 needed_$:-24 never:28 never__me:36 never__to:-25 never_been:-37 never_called:39
new_$:33 next:-42 ni:63 ni_me:37 nine:30 no:43 no_$:-43 no__a:-30 no__at:-43 no__bien:95 no__con:28 no__de:-32
no__en:62 no__escriban:51 no__gusto:97 no__here:-39 no__lo:29 no__manden:-22 no__me:24 no__mensajes:-36 no__nada:40
no__puedo:-27 no__que:-33 no__texts:-33 no_complaints:-70 no_es:-35 no_hay:-22 no_issues:-33 no_it:86 no_me:68
no_more:-53 no_one:50 no_quede:59 no_quedo:111 no_quiero:-34 no_se:34 no_soy:-41 no_tengo:-40 no_y:44 no_you:78
nobody:173 noche:59 noche_$:67 noise_$:50 nomas:43 none:22 not:113 not__and:-24 not__car:-53 not__it:33 not__me:-30
not__now:-25 not__this:-24 not__to:-22 not__with:134 not_a:-43 not_for:-22 not_going:81 not_happy:131 not_my:-63
not_now:-25 not_really:72 not_right:-22 not_the:-24 not_today:-32 not_worth:-36 nothing:85 nothing_$:135 now:-120
now_$:-49 nuevo:50 nuevo_$:59 number:-36 number_$:-27 numero:-69 numero_$:-57 nunca:97 nunca_me:95 nuts:-22
o_menos:27 of:157 of_my:29 of_the:-27 off:71 off_$:161 off_your:-26 oh:101 oh__another:66 oh_great:44 oil:62 oil_$:32
oil_light:41 ojala:27 ok_but:-41 on_$:-26 on__and:22 on__phone:26 on__refund:59 on__th:-23 on__way:-34 on_my:34
one:71 one_$:-30 only:-38 open:-52 or:-61 otro_taller:-51 out_$:-25 out__my:43 out_of:58 over:50 over_my:50
overcharged:29 pague:39 paid:28 para:-83 para_nada:-24 para_que:-29 para_un:24 pasar:-36 pay_for:41 paying:-37
pedal:-30 pedi:22 people:116 peor:122 persona:-41 persona_$:-24 pesimo:72 pesimo_servicio:32 pieza:30 please_$:-58
plenty:27 plug:49 poner:81 por:23 por__el:27 por__me:82 por__no:-71 por_eso:-26 por_favor:-50 por_la:-22 por_nada:81
por_que:46 precio:-76 precio_$:-30 prefiero:-36 prende:-25 promised:39 puede:-30 pueden:-44 puedo:-60 pues:75 puro:44
put:41 put_me:-33 put_the:52 que:143 que_$:-27 que__con:66 que__de:125 que__el:-30 que__ese:-34 que__hicieron:-28
que__lo:-37 que__mal:-54 que__malo:-39 que__otro:37 que_es:-68 que_falta:24 que_fue:-23 que_hora:-32 que_le:-82
que_me:-38 que_precio:-26 que_tan:-85 que_tanto:47 que_voy:22 quede:128 quede_muy:100 quedo_$:26 quedo_bien:39
quick:-37 quienes:-34 quienes__ustedes:-22 quienes_son:-34 quieren:107 quiero:-22 quiero__de:-33 quiero__me:-34
quiero_nada:-29 quiero_que:-37 quote:28 quote_$:69 radio:42 rayaron:27 ready_$:-22 really:103 really_$:101
recibir:-25 reembolso:67 regreso:53 remind_me:-23 repair:60 respeto:43 ridiculous:36 right__you:35 right_after:36
right_now:-35 rip:139 ripped:91 robaron:-51 robo:38 rock:-59 room:24 rude:74 rude_$:62 runs:-26 saben:-22 sacar:26
said:73 sale:-67 salio:81 salir:-46 salir_$:-26 same:80 say:30 schedule:-45 scratch:-28 scratched:27 scratched_my:27
se:-62 se_me:-71 seat:64 seat_$:52 seats:26 see:-58 sell:49 send:-53 send_me:-35 senor_$:-25 sent:31 servicio_$:-25
shop_$:-44 shop_is:40 si:-67 si__bien:-35 sick:111 siempre:77 siempre_no:-22 sign:-26 sigue:89 sin:22 since:43
slow:23 so:73 so_$:-23 some:28 someone__me:-23 someone__my:22 something:22 son:95 son_ustedes:-22 soon:-29 sorry:-24
soy:-76 soy__persona:-26 state:-25 still:128 still__about:39 still__on:59 still_waiting:59 stop:-62 stop_$:-31
stop__me:22 stuff:86 stuff_$:50 su:36 sucio:28 sure:-31 take__off:-54 take_me:-53 talk:-22 taller:28 taller_$:54
tan:-22 tan__esta:-46 tan_mal:-30 tan_malo:-33 tanto:121 tardan:-24 tax:-82 tax_refund:-65 tech:33 telefono:43
telefono_$:22 tell:-65 tell_me:-35 temprano:38 temprano_$:49 ten:35 tengo:-43 terrible:39 text:166 text__about:-26
text__again:-54 texted:25 texting_$:-32 texting_me:72 th:-54 th_$:-29 than:74 than_the:30 thank:-94 thank_you:-93
thanks:23 thanks_$:-50 thanks__nothing:125 thanks_for:80 that:27 that_$:-53 that__text:33 that__the:30 that_last:-26
the:50 the__and:-34 the__at:28 the__guy:-43 the__last:-31 the__light:30 the__oil:39 the__you:68 the_best:-49
the_bill:23 the_car:-49 the_day:-22 the_dealer:-26 the_guy:25 the_keys:22 the_kid:27 the_last:42 the_light:-36
the_mall:-36 the_morning:84 the_noise:26 the_oil:27 the_phone:38 the_price:46 the_quote:71 the_repair:34
the_texts:-71 the_th:-50 the_work:60 then:-24 there__a:33 there_a:-41 there_with:28 these:-22 thing_$:-32 thing_to:44
think:-22 think_you:-28 third:81 third_time:34 this__me:-25 this__the:55 this_a:-39 this_is:172 those:-33 three:78
three_times:23 through:68 thurs:-22 tight:-35 tight_$:-22 til:-44 till:-42 time:108 time__you:-24 time_i:55
time_it:26 time_you:34 times:103 tire:-35 to:30 to_$:22 to__back:40 to__for:35 to__me:54 to__my:51 to__shop:-30
to__the:28 to_come:26 to_pay:25 to_sell:50 to_stop:-22 to_text:-34 to_you:-33 to_your:-30 todavia:29 todavia_no:-34
today:37 today_$:51 todo:-64 todo__dia:76 todo_bien:-47 todo_el:74 told:111 told_you:31 too:-67 too_$:-189
too__for:-34 too__texts:85 too_many:86 too_much:36 took:77 took__to:-26 took_it:-45 total:-25 trabajo:35
trabajo_no:54 traded:-22 traffic:-30 traffic_is:-28 trataron:34 trato:26 treated:76 tres:67 trust:132 tuve:66
tuve_que:60 twice:140 twice_$:38 two:57 ultima:47 ultima__me:43 ultima_vez:41 un:91 un_dia:23 una:136 una__de:55
una__y:47 una_hora:46 under__hood:23 uno:66 uno_$:44 unos:50 up_$:-46 up_on:22 urge:-40 ustedes:84 ustedes_$:68
ustedes__me:-25 uy:30 va:-22 vale_$:34 veces:146 veces_$:94 vender:38 venia:30 ver:50 vez:88 vez_$:-38
vez__dejaron:24 vez_me:50 vez_que:26 vibrates:-34 viernes:-37 visit:69 visit_$:30 voy_a:-49 voy_me:43 vueltas:23
wait:-93 wait_$:-23 waited:54 waiting:29 waiting__my:-23 waiting_room:25 want:-23 want_my:26 want_to:-34 was:162
was__and:56 was__last:-44 was__to:26 was_in:-34 was_just:68 was_rude:42 was_told:40 wasnt:54 way:81 way_$:-25
way_too:123 we:-55 week:26 week_$:-43 well:-23 well_$:-28 went:-23 what__the:-48 what__you:-62 what__your:-45
what_a:167 what_are:-25 what_do:-24 what_i:99 what_is:-87 what_time:-36 what_was:-34 wheel_is:-23 when:-27 while:31
who:-39 who_is:-42 why:87 why__you:120 why_do:75 why_not:-40 will:-107 will__be:-25 with:62 with_$:31 with__i:50
with__texts:-58 with_a:34 wonderful:66 work:89 work_$:101 works:-26 worse:81 worse_$:87 worst:63 worth:-38 would:-50
wouldnt:26 wow:82 write:41 wrong:54 wrong_$:25 wrong_guy:-37 wrong_person:-23 wrote:35 y:226 y__me:69 y__no:35
y__ya:24 y_cuanto:-26 y_el:-23 y_le:-22 y_me:42 y_nadie:45 y_ni:69 y_no:25 y_quiero:22 y_ya:42 ya_$:25
ya__hicieron:-32 ya__lo:-36 ya__voy:41 ya_le:-51 ya_me:-68 yep:-44 yes:-91 yes_$:-37 yesterday:30 yo:-33 yo_no:-34
you:231 you_$:-185 you__a:39 you__for:-22 you__have:-33 you__i:-26 you__me:103 you__my:156 you__stop:-23
you__texting:80 you__the:-41 you__to:82 you__today:-22 you_can:-43 you_charge:-44 you_charged:40 you_close:-25
you_dont:-24 you_gave:22 you_got:-62 you_guys:-28 you_had:40 you_have:-71 you_keep:91 you_left:117 you_never:67
you_open:-37 you_people:79 you_put:52 you_said:82 you_say:27 you_send:-26 you_take:43 you_text:91 you_there:-24
your:115 your__and:48 your__desk:42 your__for:-25 your__have:44 your_front:42 your_guy:36 your_hours:-25 youve:30
"""
