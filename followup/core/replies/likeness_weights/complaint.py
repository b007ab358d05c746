"""What speaks for and against `complaint`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "complaint"
BIAS = -168
WEIGHTS = """\
#abia:73 #abla:-33 #ablo:25 #abus:145 #acan:75 #acar:77 #acce:73 #acti:-43 #ades:29 #adie:197 #adio:44 #ador:41
#ados:95 #affi:-35 #afte:71 #agar:-35 #ager:41 #agua:-37 #aile:-26 #aint:-117 #aite:65 #aiti:29 #akes:-28 #aler:-37
#algo:50 #algu:-36 #alin:42 #alio:97 #alir:-55 #alle:65 #alls:-30 #ally:89 #alta:27 #alwa:37 #amar:42 #ambi:-25
#amen:-32 #anag:45 #anda:-26 #ande:-56 #andi:30 #ando:49 #ange:-41 #angi:91 #anic:-34 #anne:85 #anno:126 #anot:33
#answ:72 #anta:91 #apol:29 #appi:-25 #appo:32 #appy:94 #aqui:-29 #arag:-26 #aran:31 #arca:-82 #arda:62 #aret:30
#arge:66 #aria:-31 #arlo:-28 #arly:68 #arme:49 #aron:477 #arra:-30 #arro:36 #asad:29 #asar:-30 #asia:99 #aske:63
#asnt:54 #asse:-32 #asta:-64 #aste:-40 #asti:108 #asto:69 #atar:44 #ated:63 #aten:99 #ater:-33 #ates:-49 #atie:30
#ause:66 #auto:-53 #avia:33 #ayar:26 #ayin:-40 #baby:26 #back:81 #baja:-43 #band:-26 #bank:-51 #baro:-66 #bast:27
#bate:-32 #bcap:68 #beca:28 #bein:124 #bend:-25 #best:-50 #bien:84 #bill:281 #blad:26 #blan:-32 #blar:-32 #bles:-26
#body:211 #bols:63 #boni:66 #bout:26 #brak:-97 #bran:-44 #brar:162 #brat:-31 #brok:-85 #buck:39 #bump:36 #busc:-29
#busi:136 #cada:63 #call:-44 #came:33 #cans:80 #cant:-118 #cara:79 #card:33 #care:36 #carl:42 #caro:-85 #caus:67
#ccep:54 #cell:-25 #cepc:57 #cept:49 #cesi:-67 #chan:31 #char:76 #chec:-54 #chev:-25 #choo:-27 #chos:55 #cien:-49
#cier:-28 #ciga:41 #cion:85 #cios:38 #cked:33 #cker:47 #cket:40 #clas:41 #clie:30 #clos:-28 #cobr:123 #code:-43
#colg:27 #come:89 #comi:-26 #comp:-162 #conf:139 #cont:57 #cord:30 #corr:-28 #cort:-34 #cost:-104 #crib:50 #croo:29
#ctiv:-49 #cual:-33 #cuan:-136 #cuen:56 #culo:36 #cupo:-29 #darm:-30 #daro:94 #davi:34 #deal:-28 #dece:27 #deja:62
#deje:-33 #dema:94 #dent:-38 #derf:71 #desd:71 #desk:61 #deso:118 #devo:89 #dias:93 #dich:36 #dici:-26 #dicu:37
#didn:147 #dier:56 #diga:-36 #dije:150 #dine:35 #ding:37 #dirt:52 #disa:71 #dobl:27 #does:31 #dont:-32 #door:45
#down:37 #dred:25 #driv:-100 #drov:34 #dule:-26 #duri:32 #duro:50 #eale:-35 #eall:110 #eant:-29 #earl:58 #ease:71
#easy:30 #eate:65 #eats:35 #ecal:-30 #ecau:28 #ecep:58 #eces:99 #echa:-35 #ecia:27 #edal:-34 #edan:-28 #edas:26
#eded:40 #eden:-46 #edes:86 #edul:-26 #eede:40 #eemb:65 #efie:-35 #efon:42 #egan:36 #egla:27 #egre:79 #egun:46
#eing:127 #ejar:57 #ejas:-26 #ejor:-64 #elef:42 #elen:34 #emas:132 #embo:65 #emin:-30 #empr:106 #enca:-27 #enci:39
#enco:-56 #ende:41 #enes:-40 #engo:-54 #enia:25 #enla:43 #enos:60 #ensa:128 #enta:48 #enty:46 #eopl:123 #epai:77
#epci:57 #epta:53 #eran:60 #erch:27 #erda:54 #erdi:33 #ered:49 #eren:96 #eres:-63 #erfu:71 #erie:48 #erio:85
#ermi:-28 #erne:-35 #eron:277 #eros:135 #erri:41 #erso:-62 #erta:27 #eryt:-77 #esar:72 #escr:55 #esda:-34 #esde:71
#eset:49 #esim:81 #esit:-72 #esor:113 #espe:158 #esse:124 #essi:30 #este:27 #esto:30 #estu:36 #etie:36 #ette:30
#etti:74 #evad:-30 #even:50 #ever:129 #evis:-31 #evol:89 #ewhe:50 #expl:54 #falt:63 #fast:34 #feel:66 #fell:-25
#fess:33 #ffic:-35 #fier:-43 #filt:53 #fine:-32 #five:52 #fixe:47 #fono:45 #fore:77 #forg:76 #form:105 #four:84
#fren:-46 #from:-27 #fter:71 #fund:-27 #furi:39 #game:-39 #gara:-31 #gare:27 #garo:33 #gast:43 #gave:31 #gent:26
#gett:84 #ghed:29 #ging:112 #give:-41 #gone:33 #good:-102 #grea:128 #gres:80 #gros:104 #gual:42 #gues:-32 #guie:-28
#guna:-29 #gunt:51 #gust:65 #guys:-45 #habi:73 #habl:-35 #hace:-51 #hang:48 #hank:-80 #happ:65 #harg:82 #hast:-64
#have:-30 #hear:-30 #heat:-26 #heck:-46 #hedu:-26 #heve:-25 #high:31 #hile:26 #hink:-25 #hird:95 #hizo:-25 #hock:45
#hoev:33 #hone:32 #hood:33 #hool:-25 #hora:145 #hori:-34 #hose:-26 #hour:85 #hous:-25 #hree:90 #hrou:60 #hubc:68
#huma:-27 #hung:34 #hurs:-39 #iado:96 #iben:56 #ibir:-38 #ible:27 #ibra:-36 #icey:-33 #icho:36 #icio:-61 #icul:35
#idad:39 #iday:-27 #idea:-43 #idic:37 #idnt:147 #iemp:65 #ienc:29 #iene:-40 #iere:95 #iern:-34 #iero:143 #ierr:-28
#ieza:43 #igar:41 #ight:37 #igua:40 #igue:100 #ijer:69 #ille:25 #ills:64 #imes:106 #incl:-26 #inco:90 #inea:41
#ined:42 #iner:41 #infl:25 #inst:-34 #intm:-31 #ints:-63 #inut:57 #invo:41 #iona:29 #ione:-35 #ious:96 #ippe:140
#ires:-25 #isan:31 #isap:73 #ised:67 #isit:136 #ismo:54 #ista:-40 #iste:41 #isto:-26 #ited:58 #itin:35 #iven:-32
#ives:-34 #ixed:40 #jaja:-49 #jaro:90 #jero:54 #junt:-31 #just:38 #keep:43 #kept:115 #keys:34 #kind:-40 #king:-50
#know:-61 #lado:34 #lain:-102 #lanc:-26 #laro:45 #lase:28 #last:124 #ldnt:51 #lefo:42 #left:189 #lega:45 #lema:33
#leme:-27 #lest:63 #leva:-28 #levo:38 #lied:52 #lien:28 #ligh:-28 #line:34 #list:-66 #live:-47 #llas:-26 #lled:120
#lleg:36 #look:-43 #loos:52 #lopp:26 #lous:37 #ltim:50 #lvie:76 #lway:37 #mada:-32 #made:31 #make:51 #mala:62
#mall:-34 #malo:-54 #mana:45 #mand:-70 #mani:47 #mann:86 #many:128 #marc:-78 #masi:99 #mate:-27 #mber:-47 #mbol:64
#mean:-26 #mejo:-64 #meno:26 #mens:118 #ment:-88 #mero:-82 #mess:40 #mewh:31 #mind:-45 #mine:-30 #minu:49 #mise:59
#mism:46 #mist:-27 #mole:63 #mond:-26 #mone:88 #moot:-28 #more:98 #morn:30 #moth:30 #mper:26 #mpla:-137 #mple:31
#mpra:31 #mpre:173 #much:97 #nada:144 #nadi:187 #nage:40 #nail:-27 #name:-50 #naro:55 #ncio:58 #ncon:38 #ndan:44
#ndar:-28 #nday:-29 #nden:-59 #nder:101 #ndre:25 #nece:-68 #need:-99 #nero:48 #ners:85 #nest:27 #next:-48 #nfla:25
#nfor:90 #nfun:-35 #ngan:38 #ngin:99 #nigh:57 #nine:26 #nito:38 #nner:95 #nnoy:127 #nobo:216 #noch:50 #noma:38
#none:27 #noth:133 #noyi:104 #nsaj:110 #nsan:41 #nswe:72 #ntac:-43 #ntad:27 #ntan:29 #ntar:36 #ntas:32 #nted:75
#ntes:147 #ntme:-31 #ntra:-80 #nuev:26 #numb:-39 #nume:-61 #nunc:104 #nute:35 #nvoi:42 #obar:-37 #oble:46 #obod:216
#obra:88 #obro:29 #oche:47 #ocke:101 #odav:34 #oday:43 #oeve:27 #ofes:33 #ofte:47 #oice:48 #oint:43 #ojal:29 #oles:49
#olog:29 #olso:65 #olvi:76 #omas:34 #omew:28 #omis:60 #ompl:-129 #onal:30 #onde:61 #oned:39 #oner:72 #oney:52
#onfi:83 #onfo:94 #onfu:-37 #onga:37 #onit:59 #only:-41 #onta:-46 #onte:168 #ontr:-66 #oose:49 #ooth:-28 #open:-71
#ople:128 #oppy:26 #oras:101 #orda:27 #orde:77 #orev:100 #orgo:63 #orit:-33 #orme:91 #orni:33 #orqu:33 #orry:-31
#orse:91 #orst:58 #orth:-38 #oser:90 #osto:-34 #ostr:34 #otal:-26 #othe:36 #othi:100 #ould:-68 #ours:52 #ourt:25
#ousl:68 #ouve:46 #over:68 #owns:31 #oyin:104 #pagu:26 #paid:27 #pair:80 #para:-66 #pasa:-34 #pass:-45 #payi:-34
#pcio:52 #peda:-34 #pens:-56 #peop:123 #peor:136 #pera:80 #perd:59 #peri:32 #perm:-25 #pers:-69 #pesi:81 #pete:31
#peto:48 #piez:43 #ping:-41 #plai:-100 #plen:50 #plug:53 #poca:49 #poin:37 #poke:31 #polo:29 #pone:79 #pong:32
#porq:49 #pped:110 #ppie:-25 #ppoi:32 #pran:35 #prec:-33 #pref:-32 #preg:51 #pren:-50 #pres:133 #pret:35 #pric:-52
#prin:28 #prof:33 #prom:80 #pued:-154 #pues:96 #pull:-31 #puro:92 #push:31 #qued:124 #quej:-48 #quer:26 #quic:-37
#quin:-26 #quot:41 #raba:27 #rade:-29 #radi:43 #rado:53 #raff:-34 #rain:47 #rake:-96 #rand:81 #rano:28 #raro:109
#rata:65 #rato:36 #raya:36 #rcar:-53 #rdar:86 #rday:27 #rden:73 #rdie:51 #real:145 #reas:83 #reat:146 #reca:-33
#reem:64 #refi:-35 #rega:26 #regl:27 #regr:79 #regu:55 #remi:-30 #rend:-51 #reno:-33 #rent:27 #repa:77 #rero:53
#rese:27 #reso:55 #resp:69 #ress:131 #rest:-36 #rett:47 #reve:87 #rful:71 #rged:130 #rgot:63 #ribe:53 #ribl:48
#rice:-37 #ridi:35 #righ:29 #rint:31 #rios:39 #riou:74 #ripp:134 #rite:57 #rive:-96 #rmis:-28 #rned:26 #rnes:-32
#rnin:27 #roba:-34 #robo:26 #rock:-62 #rofe:33 #roke:-86 #romi:60 #rong:66 #rook:29 #rose:93 #rote:42 #roug:53
#rove:32 #rque:36 #rreg:30 #rrib:47 #rrie:-35 #rson:-62 #rtie:40 #rude:84 #ruid:-31 #ruin:38 #runs:-27 #rust:130
#ryin:64 #ryth:-77 #saca:158 #sada:30 #said:85 #saje:110 #sale:-63 #salg:-30 #sali:53 #same:79 #sapp:73 #saro:57
#scam:-32 #sche:-26 #scho:-25 #scon:25 #scri:42 #sday:-53 #seat:106 #sell:55 #send:-52 #sent:61 #seri:91 #sero:67
#serv:-28 #shoc:45 #siad:98 #sick:115 #siem:77 #sign:-48 #sigu:86 #sill:25 #simo:78 #sinc:38 #sing:30 #sito:-60
#sits:55 #sked:64 #slop:26 #smoo:-28 #sold:69 #some:35 #sona:-40 #soon:-35 #sorr:-29 #spec:-28 #sper:100 #spet:53
#spok:31 #sque:-29 #ssed:107 #stab:34 #stak:-26 #stat:-27 #sted:57 #ster:61 #stic:81 #stil:116 #stop:-89 #stra:33
#stri:50 #stuf:77 #stuv:37 #suci:26 #sues:-29 #sure:-28 #swap:-28 #swer:72 #taba:39 #tabl:41 #tact:-33 #take:-58
#tant:120 #tape:26 #tard:42 #taro:52 #tart:-42 #tate:-37 #tche:48 #tech:40 #tede:86 #tele:33 #tell:-53 #tenc:76
#tend:31 #teng:-72 #terd:39 #tere:-51 #tero:61 #terr:42 #test:134 #teve:-30 #text:167 #that:32 #then:-34 #ther:40
#they:39 #thir:99 #thos:-33 #thre:87 #thro:52 #thur:-39 #tien:38 #tier:93 #tigh:-26 #till:73 #tima:29 #time:189
#ting:105 #tire:-52 #tive:-34 #tmen:-31 #toda:100 #todo:-57 #told:137 #toma:-30 #took:99 #tota:-26 #traf:-38
#trar:-57 #tras:-48 #trat:106 #trea:93 #tres:67 #trip:43 #trus:132 #tter:-30 #ttin:71 #tues:-30 #tuff:78 #tuve:63
#twic:161 #uant:-120 #ubca:68 #ucho:74 #ucks:37 #ueda:-26 #uede:53 #uedo:-54 #ueja:-47 #uelv:28 #uena:-29 #ueno:30
#uent:50 #ueri:32 #uess:-29 #uevo:50 #ught:-28 #uick:-37 #uido:-26 #uien:-42 #uier:31 #uldn:51 #ulou:37 #ulpa:32
#ulti:47 #uman:-27 #umbe:-41 #umer:-46 #umpe:41 #unca:101 #undr:25 #unos:41 #unta:54 #unte:57 #uote:41 #upse:44
#urge:-44 #urin:32 #urne:26 #usca:-27 #ushy:32 #usly:68 #usta:-29 #uste:78 #usto:95 #utes:38 #vado:-26 #vece:170
#vend:46 #veni:26 #vent:-30 #verc:27 #vibr:-35 #vici:-39 #vier:64 #visa:42 #visi:119 #viso:-36 #voic:49 #volv:95
#vuel:37 #want:-32 #wasn:60 #ways:34 #were:55 #when:-62 #wher:33 #whil:26 #whoe:33 #wice:161 #will:-108 #wipe:28
#with:55 #woke:28 #wond:68 #work:58 #wors:140 #wort:-34 #woul:-36 #writ:53 #wron:66 #wrot:41 #xpla:40 #xted:35
#yaro:26 #yest:39 #ying:114 #your:135 #youv:46 #ythi:-81 %again_later%agree:79 %again_later%away:-108
%again_later%bad:132 %again_later%bring:65 %again_later%busy:-78 %again_later%car_part:96 %again_later%do_it:56
%again_later%doubt:36 %again_later%elsewhere:39 %again_later%family:-35 %again_later%gone_car:33
%again_later%leave_me:-33 %again_later%machine:32 %again_later%money:96 %again_later%on_way:-49
%again_later%opening:46 %again_later%phone:56 %again_later%refuse:108 %again_later%season:-30
%again_later%shift_it:34 %again_later%staff:35 %again_later%thanks:55 %again_later%who:71 %again_later%wrong_one:142
%agree:-178 %agree%away:59 %agree%bad:120 %agree%bring:34 %agree%busy:-50 %agree%call_off:48 %agree%car_part:-56
%agree%do_it:-25 %agree%doubt:-63 %agree%elsewhere:40 %agree%fails:27 %agree%how_long:42 %agree%leave_me:59
%agree%message:79 %agree%money:47 %agree%noise:-30 %agree%on_way:96 %agree%opening:44 %agree%phone:-50
%agree%question:104 %agree%refuse:180 %agree%staff:-41 %agree%start_again:-44 %agree%thanks:-70 %away%bad:-46
%away%question:-62 %away%refuse:-42 %bad:556 %bad%busy:37 %bad%call_off:-55 %bad%car:40 %bad%car_part:127
%bad%do_it:99 %bad%doubt:57 %bad%elsewhere:96 %bad%family:91 %bad%gone_car:34 %bad%how_long:69 %bad%leave_me:58
%bad%lift:46 %bad%meaning:-199 %bad%message:67 %bad%money:65 %bad%noise:-28 %bad%on_way:28 %bad%phone:75
%bad%question:35 %bad%refuse:-39 %bad%season:29 %bad%shift_it:58 %bad%staff:275 %bad%start_again:108 %bad%thanks:50
%bring:-38 %bring%busy:-67 %bring%call_off:-41 %bring%do_it:52 %bring%doubt:53 %bring%elsewhere:-27
%bring%how_long:48 %bring%leave_me:-25 %bring%on_way:84 %bring%opening:31 %bring%refuse:-47 %bring%start_again:25
%bring%wrong_one:127 %busy:45 %busy%fails:72 %busy%leave_me:-26 %busy%message:31 %busy%refuse:93 %busy%shift_it:-32
%busy%staff:-40 %busy%thanks:-28 %call_off:-57 %call_off%car_part:40 %call_off%do_it:-97 %call_off%doubt:57
%call_off%elsewhere:57 %call_off%fails:142 %call_off%how_long:80 %call_off%leave_me:35 %call_off%message:-180
%call_off%noise:30 %call_off%odometer:32 %call_off%on_way:58 %call_off%opening:32 %call_off%phone:67
%call_off%question:166 %call_off%refuse:56 %call_off%shift_it:31 %call_off%staff:96 %call_off%start_again:30
%call_off%thanks:26 %call_off%who:38 %call_off%wrong_one:53 %car:-41 %car%car_part:38 %car%do_it:38 %car%fails:-45
%car%gone_car:-112 %car%leave_me:29 %car%lift:-38 %car%meaning:-25 %car%odometer:31 %car%on_way:34 %car%pay_day:-28
%car%refuse:-121 %car%start_again:42 %car%wrong_one:28 %car_part%fails:-80 %car_part%family:-26 %car_part%how_long:31
%car_part%leave_me:-39 %car_part%lift:33 %car_part%meaning:-32 %car_part%noise:-40 %car_part%opening:25
%car_part%phone:25 %car_part%place:-29 %car_part%refuse:112 %car_part%smoke_smell:-40 %car_part%staff:112
%car_part%thanks:62 %car_part%who:45 %do_it:-60 %do_it%elsewhere:-85 %do_it%family:-37 %do_it%gone_car:-30
%do_it%how_long:104 %do_it%leak:-27 %do_it%lift:39 %do_it%meaning:31 %do_it%message:-65 %do_it%money:35
%do_it%on_way:39 %do_it%phone:31 %do_it%place:41 %do_it%question:59 %do_it%refuse:185 %do_it%season:-32
%do_it%shift_it:-60 %do_it%who:46 %do_it%wrong_one:37 %doubt%gone_car:44 %doubt%how_long:74 %doubt%message:-89
%doubt%money:57 %doubt%on_way:33 %doubt%question:26 %doubt%shift_it:68 %doubt%start_again:-25 %elsewhere%machine:35
%elsewhere%message:36 %elsewhere%money:159 %elsewhere%question:106 %elsewhere%refuse:-121 %elsewhere%shift_it:32
%elsewhere%staff:-28 %elsewhere%start_again:-33 %elsewhere%wrong_one:-55 %fails:-121 %fails%how_long:-40
%fails%message:-56 %fails%refuse:137 %fails%wrong_one:-47 %family:-51 %family%message:36 %family%money:40
%family%refuse:-39 %family%shift_it:-39 %gone_car:-85 %gone_car%on_way:35 %gone_car%phone:25 %gone_car%question:75
%gone_car%thanks:26 %gone_car%wrong_one:75 %how_long:38 %how_long%message:38 %how_long%money:-53 %how_long%on_way:49
%how_long%opening:35 %how_long%question:-53 %how_long%refuse:63 %how_long%wrong_one:59 %leak%refuse:26
%leave_me%message:-51 %leave_me%on_way:76 %leave_me%opening:27 %leave_me%pay_day:76 %leave_me%question:77
%leave_me%refuse:-29 %leave_me%season:68 %leave_me%staff:29 %leave_me%start_again:-39 %lift:50 %lift%odometer:25
%lift%on_way:-40 %lift%opening:84 %lift%pay_day:34 %lift%phone:31 %lift%question:-53 %lift%refuse:25 %machine:54
%machine%meaning:-28 %machine%message:42 %machine%refuse:49 %meaning:-177 %meaning%money:28 %meaning%on_way:70
%meaning%phone:-63 %meaning%question:-69 %meaning%refuse:-61 %message:150 %message%on_way:245 %message%pay_day:70
%message%phone:-38 %message%question:58 %message%refuse:-97 %message%season:110 %message%shift_it:79
%message%start_again:-245 %money:182 %money%odometer:143 %money%on_way:-51 %money%pay_day:106 %money%phone:35
%money%question:-30 %money%shift_it:137 %money%staff:44 %money%start_again:66 %money%thanks:139 %money%wrong_one:79
%noise:-83 %noise%question:-31 %noise%refuse:69 %odometer:57 %odometer%pay_day:45 %odometer%question:-38
%odometer%refuse:64 %odometer%start_again:52 %on_way:25 %on_way%opening:35 %on_way%phone:57 %on_way%smoke_smell:-29
%on_way%staff:34 %opening%question:-46 %opening%wrong_one:33 %pay_day%phone:26 %pay_day%shift_it:-31
%phone%question:-112 %phone%refuse:30 %phone%shift_it:-64 %phone%start_again:55 %phone%who:95 %place:-105
%place%question:-33 %place%refuse:35 %place%staff:-28 %place%wrong_one:64 %question%season:34 %question%shift_it:86
%question%start_again:-66 %question%who:-76 %question%wrong_one:63 %refuse:-39 %refuse%season:34 %refuse%shift_it:-69
%refuse%staff:151 %refuse%start_again:114 %refuse%thanks:72 %refuse%who:-34 %season%shift_it:-49 %season%who:26
%shake:-103 %shift_it:-46 %shift_it%start_again:-44 %shift_it%thanks:50 %shift_it%wrong_one:-29 %smoke_smell:-80
%staff:75 %staff%thanks:-63 %start_again:-107 %start_again%who:76 %start_again%wrong_one:74 %who:-73
%who%wrong_one:27 %wrong_one:-44 @?:-231 @after_visit:215 @after_visit_cant_complain:-57 @after_visit_not_really:66
@car:-94 @confirm:-59 @day:-100 @nothing:44 @offers:-188 @reading:-53 @time:-135 @walk_in:-50 ^_$:-26 ^_a:-99
^_al:-44 ^_all:-41 ^_and:-31 ^_another:52 ^_any:-38 ^_are:-46 ^_bank:-32 ^_been:34 ^_brakes:-31 ^_broke:-27 ^_cada:27
^_call:-35 ^_can:-139 ^_cant:-84 ^_car:-49 ^_como:-75 ^_cost:-34 ^_could:-38 ^_cuando:-36 ^_cuanto:-96 ^_de:-121
^_did:-45 ^_do:-92 ^_enough:-54 ^_esta:-54 ^_everything:-58 ^_fine:-29 ^_fui:25 ^_gracias:39 ^_great:83 ^_hasta:-31
^_hey:-36 ^_how:-82 ^_i:43 ^_im:-38 ^_in:-25 ^_is:-164 ^_it:-86 ^_la:86 ^_last:73 ^_les:30 ^_let:-50 ^_llevo:49
^_lo:-39 ^_mal:30 ^_meh:61 ^_mejor:-25 ^_mil:27 ^_my:-105 ^_nadie:96 ^_no:73 ^_not:30 ^_nunca:86 ^_oh:107 ^_oil:-32
^_one:82 ^_otro:99 ^_pesimo:39 ^_please:26 ^_por:38 ^_prefiero:-29 ^_pues:66 ^_puro:51 ^_quede:92 ^_quedo:-48
^_sale:-26 ^_salio:43 ^_scratch:-45 ^_se:-40 ^_si:-64 ^_siempre:85 ^_sin:-44 ^_so:30 ^_son:98 ^_still:61 ^_text:-40
^_thank:-29 ^_thanks:76 ^_the:164 ^_this:128 ^_todo:-110 ^_took:44 ^_tuve:53 ^_ustedes:29 ^_uy:31 ^_very:38
^_waiting:-57 ^_we:-29 ^_when:-28 ^_why:111 ^_worst:44 ^_wow:57 ^_y:-75 ^_ya:-94 ^_yep:-39 ^_yes:-56 ^_yo:-45
^_you:138 ^_your:163 a:96 a_$:-32 a__car:28 a__for:-29 a__hora:-33 a__is:102 a__off:140 a__time:-26 a__under:26
a_good:-27 a_la:-47 a_lot:28 a_month:61 a_phone:33 a_que:-53 a_rip:140 a_week:109 after:83 after_$:-27 after_you:64
agua:-27 ahora:34 ahora_si:26 ahorita:-33 al:-70 al_cien:-36 algo:71 all_$:-55 all__my:51 all_day:41 all_good:-46
all_i:25 all_over:60 already_and:30 always:37 an:28 an_hour:30 and:228 and__dont:-35 and__it:-31 and__not:35
and__one:38 and__want:25 and_i:33 and_im:27 and_it:62 and_nobody:71 and_the:25 and_what:-33 and_you:35 and_your:27
anda:-25 ando:-28 annoying:104 annoying_$:94 anos:26 another:33 another_bill:42 answer:35 antes_$:43 any:-83
appointment:-29 appreciate:25 appreciate_it:34 are:-82 are_$:-29 as:-70 as_well:-39 asi_no:29 ask:38 ask_me:-32
asked:64 asked_for:50 at:67 at_$:-34 at__counter:63 at__the:74 at_all:-34 at_in:69 at_your:44 ate:26 atencion:69
aviso:-26 aviso_$:-26 baby:30 baby_$:33 back:68 back_$:67 back__for:25 back_on:26 bad:-207 bad_$:-146 bank:-50
bank__it:-27 bateria:-31 because:28 been__your:-28 been_to:-30 being:124 best:-50 best_$:-47 bet:-26 bien:60
bien_el:48 bill:195 bill_$:39 bill_was:51 bonito:46 brake:-31 brakes:-64 brakes_feel:-26 broke:-67 bucks:40 bumper:44
but:-98 but_the:-40 but_what:-29 by:-45 by__mall:-30 by_the:-45 cada:44 call:-88 call_me:-73 called:79
called__back:66 called_me:62 came:38 came_back:-35 can:-241 can__me:-31 can_i:-51 can_you:-102 cancel_it:28
cancelen:39 cant:-111 cant_complain:-62 cap:48 car:86 car__i:25 cara:68 card:35 caro:-47 carro_$:28
carro__ustedes:-33 cause:39 changed__oil:33 changing:77 charge:-53 charge_for:-31 charged:103 charged__for:33
charged_me:50 check:-44 cien:-36 cien_$:-34 clase:30 clase_de:30 cobran:-40 cobran_$:25 cobran_por:-36 cobraron:119
cobraron__mas:30 cobraron_de:30 cobro:29 code:-43 come:102 come__it:66 come_back:31 come_in:55 como_me:31
complain:-62 complain_$:-57 complaints:-79 con:190 con__que:36 con__trabajo:28 con_el:77 con_la:50 con_lo:26
con_un:31 con_ustedes:58 contact:-25 contento:27 contesta:65 cost:-57 costo:-31 could:-56 could_you:-53 couldnt:28
couldnt_be:28 count:-25 counter:67 cuanto:-142 cuanto__el:-37 cuanto_me:-43 cuenta:65 da:-68 day:-56 day_$:-50 de:38
de_$:-43 de__a:30 de__llanta:51 de__manana:28 de__no:-30 de__y:25 de_la:33 de_las:-45 de_mas:47 de_que:-47
de_regreso:42 de_respeto:28 dealer:-31 dejaron:95 dejaron_el:33 del:-34 del__me:25 desde:71 desde_que:50 desk:61
devolvieron:76 dia:26 dias:87 dicho:36 did:-76 did_it:-26 did_my:43 did_that:-45 did_you:-68 didnt:147 dije:81
dijeron:55 dinero:36 do:-180 do__charge:-28 do__keep:80 do__own:-25 do_i:-36 do_not:-26 do_you:-38 doble:25 does:33
does__write:34 does_nobody:39 dont:-32 dont__me:74 dont__you:85 dont__your:-63 dont_have:-40 dont_know:-27
dont_text:56 door:43 dos:127 dos_veces:108 down_$:31 down_on:-48 drive:-52 drives:-28 drove:34 during:32 duro:50
early:64 early_$:57 el:62 el__fue:37 el__todo:33 el__y:48 el_carro:51 el_dia:48 el_gerente:27 el_numero:-49
el_otro:-39 el_servicio:-36 el_telefono:77 el_trabajo:77 el_trato:31 else:-36 en__noche:55 en__taller:-35 en_el:-32
en_otro:-31 encargado_$:-26 encontraron:-56 encontraron_$:-50 enough_$:47 era:34 es_$:-50 es__mismo:28 es_un:45
escriban:27 escriban_$:-33 escriben:57 ese:-99 ese_servicio:-47 eso:-70 eso_$:-25 esperando:68 espere:39 esta:-172
esta_$:-48 esta_muy:-39 estan:-26 estuvo:28 even:46 ever:47 every:63 every__i:54 every_time:55 everything:-77
everything_was:-51 explain:27 falta:37 falta__respeto:28 falta_de:42 far:-31 favor_$:-40 feel:78 feel_like:30 feo:35
fine:-32 fine_$:-39 five:52 fix:37 fix_it:25 fixed:47 for:93 for__i:34 for__me:-26 for__same:36 for_a:31 for_an:27
for_me:-90 for_nothing:140 forever:100 forgot:63 forgot_to:67 four:56 freno:-43 from:-27 front_desk:43 fue__que:-27
fue_lo:-27 fui:103 garage:-26 gasto:58 gave:31 gente:32 get:-79 get_a:-31 get_my:-42 get_paid:-26 getting:84 give:-33
give_me:-32 going_to:-42 gone:33 good:-101 good_$:-35 got__for:29 got__wrong:-39 got_a:-35 got_it:39 got_my:38
got_the:-45 gracias_$:-55 gracias__nada:79 gracias_por:69 grease:65 grease__over:45 grease_all:45 great:42
great_$:-49 great__bill:42 great_another:42 great_job:-34 grosero:37 guess:-29 gusto:100 guy_$:-39 guys:-45 guys_$:43
habia:45 habia_dicho:29 hablar:-42 hablar__el:28 hablar_con:-40 hablo:25 had:78 had_to:63 happier:-25 happy:86
happy_with:87 has:33 hasta:-64 hasta_que:-35 have__wrong:-34 have_been:41 have_my:-29 have_never:-30 have_no:35
have_the:-38 hay:-44 he:-54 he_llevado:-29 here:-61 here_$:-65 hey:-32 hicieron_esperar:38 high:-30 hit:-29 hizo:-25
hood:33 hora_y:25 horas:101 horas_$:40 hours:63 how__was:40 how_bad:-36 how_come:37 how_i:62 how_many:-39
how_much:-46 hoy:27 hubcap:60 human:-25 hundred:25 hung:34 hung__on:34 hung_up:34 i:131 i__a:-40 i__been:25 i__for:28
i__my:-82 i__never:-48 i__that:32 i__the:-28 i__to:-41 i__told:40 i_came:29 i_come:55 i_didnt:60 i_do:-28 i_feel:73
i_get:-66 i_got:53 i_have:38 i_left:54 i_live:-35 i_need:-54 i_paid:50 i_said:-26 i_think:-40 i_told:40 i_want:29
i_was:186 i_will:-27 idea:-43 if__like:43 if_i:-37 igual:47 igual_$:43 ill:-28 im:89 im__of:71 im__the:-27
im__work:42 im_at:46 im_still:60 in_$:-54 in__a:29 in__and:46 in__car:42 in__is:51 in__morning:91 in_a:-47
in_another:-36 in_it:74 in_june:-27 in_my:28 in_the:63 in_your:29 interesa:-31 invoice:42 ir:-26 is_$:-60 is__a:-96
is__bad:-31 is__bill:-30 is__i:43 is__new:58 is__than:36 is__the:27 is_getting:85 is_in:29 is_it:-48 is_something:58
is_texting:-26 is_that:-38 is_there:-44 is_this:-53 is_tight:-28 is_wrong:31 is_your:-36 issues:-29 it:52 it_$:-26
it__getting:27 it__in:49 it__ok:-40 it_back:-25 it_in:-30 it_is:149 it_still:52 it_you:27 jaja:-40 jala:-31
june_$:-36 just:31 just__i:69 keep:65 keep__me:75 keep_texting:69 kept:115 key:28 key_$:27 keys:34 know:-57
know_you:-37 la:113 la__es:34 la__no:43 la__pasada:33 la__vez:140 la_atencion:42 la_cara:67 la_casa:-25 la_cuenta:53
la_lista:-30 la_manana:28 la_noche:67 la_otra:88 la_ultima:44 la_verdad:38 la_vez:30 las__la:35 las_de:41
las_llantas:-35 last:122 last__and:54 last__you:50 last_bill:27 last_month:-35 last_night:-50 last_time:205
last_visit:70 last_week:-63 late_$:-44 later:-43 le:-219 le__el:-30 le__la:-25 le__servicio:-25 le_hicieron:-67
left:189 left_$:-27 left_a:87 les:111 les_dije:32 let:-68 let_me:-46 lied:44 lied_to:38 light__on:26 list:-43
list_$:-45 live:-38 live_in:-33 llamada:-30 llamada_$:-35 llanta:28 llanta_$:36 llantas:-35 llantas_$:-30 llevado:-29
llevo:38 lo:-80 lo__a:-30 lo__ahi:27 lo__con:61 lo__el:-33 lo__me:31 lo_hicieron:-59 lo_mismo:40 lo_que:47
lo_robaron:-30 lol:-62 lol_$:-29 look_at:-33 loose:52 loose_$:48 los:-99 los_mensajes:-70 lost_my:51 lot:54 made:31
makes:55 makes_the:53 mal_$:-88 mal_el:-38 mal_servicio:54 mala:43 mall:-30 mall_$:-30 malo:-60 man:26 manager:45
manana_$:-32 mandan:47 manden:-49 manden_nada:-41 manners:77 many:128 many_texts:150 mas:63 mas__menos:30
mas_mensajes:-28 mas_o:30 mas_que:34 me:148 me_$:-84 me__a:-25 me__algo:82 me__bien:26 me__como:45 me__el:46
me__en:31 me__esperar:39 me__hablar:-34 me__hicieron:-46 me__horas:30 me__im:42 me__in:38 me__june:-39 me__la:49
me__mal:43 me__mas:-63 me__mensajes:54 me__my:-28 me__nada:38 me__que:27 me__robaron:-38 me__your:-38 me_about:-42
me_again:-75 me_back:35 me_cobraron:101 me_da:-68 me_dejaron:84 me_escriban:37 me_escriben:58 me_every:38 me_for:53
me_gusto:95 me_hicieron:71 me_i:-32 me_in:-86 me_interesa:-30 me_late:-30 me_llame:-29 me_lo:-62 me_manden:-39
me_off:-79 me_puede:-26 me_pueden:-26 me_puedo:-34 me_quede:-30 me_salio:66 me_so:110 me_tienen:51 me_today:27
me_trataron:35 me_up:-31 me_urge:-39 me_with:-32 meant:-29 meh:59 mejor:-63 menos:26 mensaje:113 mensaje_$:43
mensajes_$:-59 messages_$:-28 mi:102 mi__de:66 mi_carro:31 mi_telefono:-28 mine:-25 minutes:38 mismo:59 molesto:46
money:65 money_$:49 money__tight:-29 money_is:-29 month_$:-36 month_is:81 more:120 more_$:-31 more_texts:-29
morning:45 morning_$:60 mostrador:34 muchacho:26 muy:104 muy_caro:-31 my:207 my__a:30 my__back:64 my__has:26
my__is:-47 my__refund:-59 my__was:51 my_bill:108 my_bumper:34 my_car:175 my_card:26 my_door:34 my_hubcap:57
my_money:28 my_oil:66 my_radio:30 my_refund:26 my_schedule:-34 my_seat:69 my_tax:-63 my_tires:25 nada:143 nada_$:164
nada__ustedes:-26 nadie:187 nadie_me:60 name:-28 necesito:-58 need:-143 need_to:-44 needed:40 never:29 never__me:52
never__to:-27 never_been:-43 never_called:39 new_$:39 next:-48 ni:71 ni_me:43 nine:27 no:30 no_$:-37 no__a:-39
no__at:-40 no__bien:89 no__de:-41 no__en:66 no__escriban:58 no__gusto:95 no__here:-42 no__last:25 no__lo:33
no__manden:-32 no__me:26 no__mensajes:-33 no__nada:49 no__puedo:-34 no__que:-48 no__texts:-36 no__vale:37 no_and:28
no_como:27 no_complaints:-79 no_es:-27 no_hay:-29 no_issues:-29 no_it:85 no_me:60 no_more:-61 no_one:50 no_quede:67
no_quedo:111 no_quiero:-35 no_se:41 no_sigue:58 no_soy:-36 no_tengo:-49 no_y:52 no_you:75 nobody:209 nobody_here:-30
noche:64 noche_$:67 noise_$:49 nomas:38 none:28 not:136 not__and:-29 not__car:-52 not__it:26 not__me:-30 not__now:-25
not__to:-29 not__with:134 not_a:-47 not_going:73 not_happy:146 not_me:-29 not_my:-62 not_now:-29 not_really:79
not_the:-30 not_today:-29 not_worth:-32 nothing:101 nothing_$:145 now:-105 now_$:-50 nuevo:54 nuevo_$:57 number:-38
number_$:-30 numero:-73 numero_$:-55 nunca:106 nunca_me:111 o:-29 o_menos:30 ocupo:-27 of:129 of_you:-26 off:78
off_$:175 oh:102 oh__another:70 oh_great:42 oil:67 oil__came:30 oil_cap:38 oil_light:40 ojala:29 ok_but:-29
on__phone:40 on__refund:58 on__seat:25 on__th:-26 on__way:-36 on_my:46 on_time:31 one:119 one_$:-39 one__a:60
one__and:31 only:-41 open:-63 or:-80 otra__me:37 otro__mas:69 otro_taller:-50 out__my:45 out_of:49 over:41 over_my:44
overcharged:27 pague:47 paid:29 para:-73 para_que:-34 para_un:26 part:27 pasada:33 pasar:-36 pass:-25 pay_for:42
paying:-34 pedal:-32 people:123 people_are:32 peor:129 persona:-43 persona_$:-25 pesimo:80 pesimo_servicio:36
phone_call:27 pieza:27 please_$:-51 plenty:40 plug:49 poca:49 poner:78 pongan:41 por:35 por__me:86 por__no:-80
por_eso:-25 por_favor:-30 por_nada:85 por_que:42 porque:29 precio:-62 precio_$:-32 prefiero:-35 pricey:-33
promised:53 puede:-26 pueden:-46 puedo:-75 pues:88 pues_no:58 puro:51 put:50 put_me:-28 put_the:52 que:138
que__con:60 que__de:128 que__el:-36 que__ese:-31 que__hicieron:-28 que__llame:-25 que__lo:-34 que__mal:-66
que__malo:-44 que__otro:35 que_es:-75 que_falta:27 que_hora:-37 que_le:-79 que_mal:49 que_me:-28 que_precio:-26
que_tan:-96 que_tanto:44 que_voy:25 quede:131 quede_muy:99 quedo_$:25 quedo__el:36 quedo_bien:39 quick:-36
quienes:-38 quienes_son:-38 quieren:110 quiero:-30 quiero__de:-35 quiero__me:-42 quiero_nada:-29 quiero_que:-45
quote:33 quote_$:68 radio:44 rayaron:26 really:110 really_$:104 recibir:-25 recordatorios:26 reembolso:65 regreso:53
remind_me:-30 repair:80 respeto:48 ridiculous:37 right__you:32 right_after:32 right_now:-37 rip:140 ripped:92
robaron:-51 robo:40 rock:-62 rude:84 rude_$:67 ruido:-25 runs:-27 sacan:83 sacar:29 said:85 sale:-80 salio:97
salir:-55 salir_$:-25 same:84 say:39 schedule:-44 scratch:-34 se:-59 se_me:-85 se_vale:37 seat:70 seat_$:47 seats:36
see:-63 sell:46 send:-53 send_me:-37 senor_$:-25 sent:26 servicio:-39 servicio_$:-34 shop:28 shop_$:-40 shop_is:37
si:-43 si__bien:-31 sick:115 sick_of:119 siempre:77 sign:-26 sigue:97 sigue_igual:53 sin:27 since:38 sloppy:26 so:74
so_$:-27 some:43 somewhere:31 son:102 son__de:41 son_las:34 soon:-32 sorry:-29 soy:-72 st:-25 state:-25 still:118
still__about:41 still__on:57 still_waiting:62 stop:-67 stop_$:-29 stuff:78 stuff_$:48 su:52 sure:-39 take__off:-60
take_me:-59 taller_$:57 tan:-35 tan__esta:-58 tan_mal:-40 tan_malo:-39 tanto:114 tax:-86 tax_refund:-61 tech:34
telefono:45 tell:-55 tell_me:-34 temprano:39 temprano_$:49 ten:36 tengo:-55 terrible:42 text:175 text__about:-28
text__again:-50 text_you:-27 texted:35 texting_$:-40 texting_me:69 textos:-25 textos_$:-27 th:-49 th_$:-30 than:79
than_the:28 thank:-102 thank_you:-100 thanks:25 thanks_$:-46 thanks__nothing:132 thanks__the:-29 thanks_for:84
that:32 that_$:-63 that__text:29 that__the:36 that_bad:-26 that_is:27 the:34 the__and:-39 the__came:-32 the__guy:-43
the__last:-27 the__light:26 the__oil:41 the__on:27 the__you:80 the_best:-46 the_car:-42 the_counter:29 the_day:-25
the_dealer:-25 the_kid:25 the_last:43 the_light:-35 the_mall:-30 the_morning:91 the_noise:28 the_old:32 the_phone:61
the_price:31 the_quote:68 the_repair:36 the_texts:-72 the_th:-46 the_work:58 then:-34 there__a:34 there_a:-38
there_with:29 they:35 thing_$:-41 thing_to:46 think_you:-30 third:95 third_time:46 this__the:50 this_a:-36
this_is:167 those:-33 three:92 three_times:27 through:60 tienen:26 tight:-34 til:-48 till:-42 till_the:-27 time:93
time__you:-26 time_and:40 time_i:53 time_you:27 times:110 tire:-38 to:44 to__back:40 to__for:36 to__me:60 to__my:48
to__shop:-37 to_come:29 to_me:43 to_my:29 to_put:33 to_sell:47 to_text:-43 to_the:-27 to_you:-35 to_your:-29 toda:25
todavia:34 todavia_no:-37 today:43 today_$:48 todo:-58 todo__dia:76 todo_bien:-53 todo_el:75 told:137 told_me:41
told_you:35 too:-53 too_$:-189 too__for:-32 too__texts:86 too_many:100 too_much:33 took:99 took__to:-26 took_it:-26
top_off:26 trabajo:38 trabajo_no:52 traffic:-34 traffic_is:-33 trataron:35 trato:37 treated:83 tres:72 tres__que:28
tres_veces:36 trust:131 tuve:61 tuve_que:56 twice:161 twice_$:39 two:75 two_hours:25 ultima:43 ultima__me:39
ultima_vez:32 un:109 una:137 una__de:54 una__y:56 una_hora:52 uno:78 uno_$:45 unos:41 up:-27 up_$:-27 urge:-40
ustedes:86 ustedes_$:52 uy:31 va:-32 vale_$:34 veces:170 veces_$:89 vender:34 venia:26 ver:53 vez:97 vez_$:-58
vez__dejaron:25 vez__me:25 vez_me:63 vez_pasada:30 vez_que:35 vibrates:-30 viernes:-32 visit:74 visit_$:29 voy_a:-52
voy_me:50 voy_pero:25 wait:-98 waited:60 waiting:29 want_my:25 want_to:-36 was:175 was__and:67 was__last:-49
was__there:88 was_in:-43 was_just:65 was_rude:41 was_told:41 wasnt:60 way:97 way_$:-26 way_too:128 we:-59 week:28
week_$:-53 week_is:25 well_$:-29 were:39 what__the:-62 what__you:-69 what__your:-47 what_a:166 what_do:-27 what_i:84
what_is:-83 what_time:-36 what_was:-30 what_you:35 when:-47 while:27 while_im:44 who:-45 who_is:-50 why:102
why__you:123 why_are:49 why_do:78 why_not:-39 will:-115 will__be:-26 with:60 with_$:31 with__i:50 with__texts:-57
with_a:28 woke:28 wonderful:71 work:98 work_$:105 worse:81 worse_$:84 worst:58 worth:-34 would:-60 wow:89 write:49
write__down:42 wrong:66 wrong_$:25 wrong_guy:-37 wrong_person:-26 wrote:41 y:256 y__me:83 y__no:26 y__que:-35
y_cuanto:-26 y_me:48 y_nadie:57 y_ni:71 y_no:41 y_quiero:25 y_ya:52 ya:26 ya_$:30 ya__hicieron:-40 ya__lo:-46
ya__voy:35 ya_le:-50 ya_me:-52 ya_no:-27 ya_se:38 yep:-41 yes:-83 yes_$:-38 yesterday:39 yo:-35 yo_no:-42 you:235
you_$:-195 you__a:57 you__at:28 you__for:-25 you__have:-36 you__i:-26 you__me:102 you__my:171 you__so:59
you__texting:83 you__the:-44 you__to:89 you_are:-34 you_bet:-26 you_can:-50 you_charge:-46 you_charged:42
you_close:-28 you_dont:-26 you_forgot:42 you_got:-61 you_guys:-48 you_had:33 you_have:-67 you_keep:94 you_left:127
you_like:35 you_lost:48 you_never:70 you_open:-49 you_people:96 you_put:46 you_said:82 you_send:-27 you_take:42
you_tell:-29 you_text:90 you_there:-27 your:148 your__and:41 your__desk:37 your__for:-28 your__have:43 your_front:37
your_guy:37 your_hours:-33 your_the:-41 youve:46 youve__me:40
"""
