"""What speaks for and against `complaint`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "complaint"
BIAS = -177
WEIGHTS = """\
#aben:-25 #abia:84 #abla:-34 #ablo:29 #abus:169 #acan:81 #acar:83 #acce:81 #acer:-25 #acia:-27 #acti:-44 #aded:-25
#ades:34 #adie:222 #adio:49 #ador:47 #ados:107 #affi:-38 #afte:81 #agai:27 #agar:-40 #ager:47 #agua:-42 #ague:25
#aigo:-27 #aile:-30 #aint:-126 #aite:68 #aiti:41 #aken:-32 #akes:-29 #aler:-40 #algo:52 #algu:-45 #alin:40 #alio:101
#alir:-59 #alla:-29 #alle:69 #alls:-33 #ally:94 #alta:31 #alwa:41 #amar:44 #amba:25 #ambi:-28 #amen:-34 #anag:51
#anda:-25 #ande:-59 #andi:33 #andl:-25 #ando:55 #aner:26 #ange:-43 #angi:104 #anic:-39 #anne:94 #anno:137 #anos:27
#anot:35 #answ:78 #anta:100 #anto:-33 #anym:-25 #apol:35 #appi:-29 #appo:36 #appy:101 #aqui:-35 #arag:-31 #aran:34
#arca:-93 #arda:69 #arec:35 #arer:50 #aret:34 #arge:76 #aria:-36 #arlo:-33 #arly:77 #arme:55 #aron:503 #arra:-33
#arro:33 #asad:25 #asar:-35 #asia:111 #asie:27 #aske:59 #asnt:62 #asse:-36 #asta:-65 #aste:-43 #asti:120 #asto:73
#atar:47 #ated:67 #aten:105 #ater:-44 #ates:-55 #athe:-26 #atic:-26 #atie:34 #augh:25 #ause:75 #auto:-62 #avia:36
#ayar:30 #ayin:-46 #baby:30 #back:78 #baja:-45 #band:-30 #bank:-59 #baro:-76 #bast:36 #bate:-38 #bcap:77 #beca:31
#been:26 #befo:-29 #bein:141 #bend:-28 #best:-57 #bian:25 #bien:85 #bill:313 #blad:30 #blan:-34 #blar:-33 #bles:-27
#bloc:-32 #body:220 #bols:69 #boni:73 #brak:-112 #bran:-47 #brar:184 #brat:-34 #brok:-100 #buck:43 #bump:45 #burn:25
#busc:-32 #busi:162 #cada:79 #call:-51 #came:38 #cans:94 #cant:-129 #cara:86 #card:41 #care:40 #carl:47 #caro:-100
#caus:76 #ccep:58 #cell:-25 #cepc:64 #cept:53 #cesi:-72 #chan:39 #char:85 #chec:-60 #chev:-28 #choo:-34 #chos:58
#cien:-51 #cier:-32 #ciga:46 #cion:93 #cios:44 #cita:-27 #cked:32 #cker:44 #cket:41 #clas:46 #clie:35 #clos:-29
#cobr:147 #code:-51 #colg:30 #come:89 #comi:-30 #comp:-170 #conf:158 #cont:49 #cord:41 #corr:-33 #cort:-37 #cost:-115
#crib:65 #croo:34 #ctiv:-51 #cual:-36 #cuan:-151 #cuen:64 #cuer:-27 #culo:40 #cupo:-32 #darm:-36 #daro:102 #dato:25
#davi:38 #deal:-30 #dece:31 #deja:61 #deje:-33 #dema:102 #dent:-45 #derf:83 #desd:80 #desk:65 #deso:136 #devo:94
#dias:115 #dich:42 #dici:-30 #dicu:41 #didn:156 #dier:55 #diga:-40 #dije:169 #dine:39 #ding:43 #dios:-25 #dirt:56
#disa:78 #dobl:31 #does:30 #dont:-28 #door:52 #down:41 #drai:57 #dred:28 #driv:-112 #drov:39 #dule:-29 #duri:37
#duro:56 #eale:-38 #eall:119 #eant:-32 #earl:64 #ease:87 #easy:33 #eate:69 #eats:40 #ecal:-34 #ecau:31 #ecep:65
#eces:110 #echa:-38 #ecia:29 #ecio:-26 #edal:-36 #edan:-31 #edas:30 #eded:43 #eden:-51 #edes:84 #edul:-29 #eede:43
#eemb:72 #efie:-38 #efon:39 #efor:-29 #egan:38 #egar:29 #egla:30 #egre:84 #egun:47 #eing:144 #ejar:52 #ejas:-31
#ejor:-73 #eken:-25 #elef:39 #elen:35 #elvo:25 #emas:144 #embo:72 #emin:-33 #empr:113 #enca:-29 #enci:36 #enco:-66
#ende:47 #endi:-28 #enen:26 #enes:-42 #engo:-54 #enia:28 #enla:48 #enos:67 #ensa:133 #enta:48 #ents:-30 #enty:59
#eopl:120 #epai:78 #epci:64 #epta:57 #eran:67 #erch:31 #erda:59 #erdi:35 #ered:56 #eren:105 #eres:-69 #erfu:83
#erie:52 #erio:95 #ermi:-40 #erne:-39 #eron:299 #eros:151 #erri:43 #erso:-67 #erta:35 #eryt:-83 #esar:79 #escr:71
#esda:-37 #esde:80 #eset:53 #esim:90 #esit:-78 #esor:131 #espe:174 #esse:141 #essi:33 #essu:25 #este:25 #esto:36
#estu:42 #etie:40 #ette:39 #etti:74 #evad:-34 #even:52 #ever:105 #evis:-34 #evol:94 #ewhe:58 #exce:-25 #expl:61
#exti:-29 #falt:72 #fast:37 #feel:77 #fell:-29 #fess:37 #ffic:-36 #fier:-47 #filt:60 #fine:-33 #fini:-26 #five:59
#fixe:50 #floo:28 #fono:41 #fore:69 #forg:80 #form:117 #four:93 #fren:-59 #from:-61 #fter:81 #fund:-34 #furi:44
#gain:27 #game:-41 #gara:-37 #gare:30 #garo:41 #garr:-28 #gast:43 #gave:30 #genc:-29 #gent:37 #gett:85 #ghed:31
#ghwa:25 #ging:120 #give:-46 #goin:30 #gone:39 #good:-103 #grea:146 #gres:85 #gros:113 #gual:47 #gues:-38 #guie:-35
#guna:-35 #gunt:57 #gust:73 #guys:-43 #habi:84 #habl:-35 #hace:-58 #hago:-25 #hang:56 #hank:-92 #happ:66 #harg:93
#hast:-70 #have:-29 #hear:-32 #heat:-27 #heck:-51 #hedu:-29 #hell:-29 #heve:-28 #high:36 #hile:29 #hird:102 #hizo:-27
#hock:45 #hoev:39 #hold:26 #hone:32 #hood:35 #hool:-31 #hora:168 #hori:-44 #hour:85 #hous:-27 #hree:110 #hrou:72
#hubc:77 #huma:-29 #hund:27 #hung:38 #hurs:-44 #husb:-27 #hway:25 #iado:108 #iben:62 #ibir:-38 #ible:29 #ibra:-41
#ices:-27 #icey:-35 #icho:41 #icio:-56 #icul:40 #idad:44 #iday:-31 #idea:-46 #idic:41 #idio:25 #idnt:156 #iemp:68
#ienc:30 #iene:-37 #iere:106 #iern:-36 #iero:153 #ierr:-32 #ieza:47 #igar:46 #ight:51 #ighw:25 #igua:46 #igue:105
#ijer:78 #illa:-25 #ille:28 #ills:72 #ilte:26 #imes:115 #incl:-28 #inco:100 #inea:47 #ined:48 #iner:45 #infl:28
#ingu:-27 #inis:-25 #inst:-37 #intm:-32 #ints:-64 #inut:60 #invo:46 #iona:33 #ione:-40 #ious:109 #ippe:156 #ires:-31
#isan:35 #isap:80 #ised:80 #isit:143 #ismo:58 #ista:-42 #iste:44 #isto:-29 #ited:61 #itin:46 #iven:-34 #ives:-37
#ixed:41 #izad:26 #jaja:-56 #jaro:96 #jero:61 #june:-38 #junt:-34 #just:44 #keep:38 #kend:-25 #kept:128 #keys:38
#kind:-46 #king:-41 #know:-67 #lado:39 #lain:-104 #lame:-28 #lanc:-29 #laro:49 #lars:27 #lase:33 #last:115 #ldnt:60
#lear:27 #lefo:39 #left:203 #lega:48 #lego:-25 #lema:36 #leme:-30 #lent:26 #lest:66 #leva:-31 #levo:40 #lied:59
#lien:31 #ligh:-32 #line:39 #list:-69 #live:-49 #lked:25 #llam:-27 #llas:-30 #lled:130 #lleg:38 #llin:27 #llow:-25
#look:-47 #loor:29 #loos:56 #lopp:29 #lost:25 #lous:41 #ltim:58 #lver:29 #lvie:81 #lway:41 #mada:-35 #made:33
#make:61 #mala:63 #mall:-34 #malo:-58 #mana:50 #mand:-70 #mani:49 #mann:95 #many:143 #marc:-90 #masi:111 #mate:-28
#mber:-50 #mbia:-29 #mbol:71 #mean:-31 #mejo:-73 #meno:26 #mens:123 #ment:-96 #mero:-92 #mess:49 #meti:28 #mewh:37
#mind:-48 #mine:-35 #mint:28 #minu:51 #mise:71 #mism:48 #mist:-31 #mole:66 #mond:-29 #mone:97 #moot:-30 #more:88
#morn:34 #most:26 #moth:32 #mper:29 #mpla:-144 #mple:37 #mpra:36 #mpre:187 #much:107 #nada:148 #nadi:210 #nage:47
#nail:-30 #name:-64 #naro:61 #ncia:-25 #ncio:61 #nclu:-25 #ncon:38 #ndan:59 #ndar:-36 #nday:-36 #nden:-63 #nder:117
#ndic:-25 #ndly:-25 #ndre:28 #nece:-74 #neci:26 #need:-104 #nero:54 #ners:94 #nest:31 #next:-54 #nfla:28 #nfor:99
#nfun:-37 #ngan:38 #ngin:114 #ngun:-27 #nigh:65 #nine:28 #nish:-28 #nito:41 #nner:104 #nnoy:139 #nobo:226 #noch:66
#noma:42 #none:32 #noth:140 #noyi:113 #nsaj:114 #nsan:49 #nswe:78 #ntac:-49 #ntan:33 #ntar:43 #ntas:38 #nted:81
#ntes:164 #ntis:-25 #ntme:-32 #ntra:-93 #ntre:30 #numb:-44 #nume:-68 #nunc:105 #nute:38 #nvoi:47 #nymo:-25 #obar:-45
#oble:50 #obod:226 #obra:106 #obro:33 #oche:67 #ocke:97 #ocup:-26 #odav:38 #oday:42 #oeve:33 #ofes:37 #offe:25
#ofte:50 #oice:53 #oing:25 #oint:49 #ojal:32 #oles:49 #olog:35 #olso:72 #olve:35 #olvi:81 #omas:37 #omat:-31 #omew:34
#omis:72 #ompl:-133 #onal:34 #once:29 #onde:72 #oned:43 #oner:82 #oney:56 #onfi:94 #onfo:103 #onfu:-38 #onga:41
#onit:66 #only:-46 #onta:-53 #onte:178 #ontr:-76 #ooks:26 #oose:53 #ooth:-30 #open:-76 #ople:125 #oppy:29 #oras:117
#orda:32 #orde:89 #orev:99 #orgo:69 #orio:25 #orit:-42 #orks:-26 #orme:99 #orni:38 #orqu:37 #orra:-26 #orry:-33
#orse:107 #orst:63 #orth:-47 #oser:98 #osto:-37 #ostr:39 #otal:-29 #othe:38 #othi:104 #ould:-54 #ours:52 #ourt:29
#ousl:78 #ouve:52 #over:78 #owns:36 #oyin:113 #pagu:29 #paid:31 #pair:81 #para:-70 #pare:37 #pasa:-46 #pass:-50
#payi:-41 #pcio:58 #peda:-37 #pedi:25 #pens:-64 #peop:120 #peor:157 #pera:82 #perd:63 #peri:31 #perm:-36 #pers:-75
#pesi:90 #pete:37 #peto:54 #piez:47 #ping:-46 #plai:-102 #plen:64 #plie:26 #plug:61 #poca:56 #pock:41 #poin:42
#poke:35 #polo:35 #pone:90 #pong:35 #porq:55 #pped:122 #ppie:-29 #ppoi:36 #pran:40 #prec:-39 #pref:-37 #preg:57
#pren:-53 #pres:147 #pret:39 #pric:-61 #prin:33 #prof:37 #prom:94 #pued:-177 #pues:109 #pull:-34 #puro:100 #push:36
#quea:-26 #qued:135 #quej:-65 #quer:29 #quic:-44 #quin:-30 #quit:-32 #quot:51 #raba:25 #rade:-31 #radi:49 #rado:63
#raff:-37 #rain:54 #rake:-110 #rand:83 #rano:33 #raro:115 #rata:73 #rato:47 #raya:53 #rcar:-61 #rdar:96 #rdat:28
#rday:30 #rden:84 #rder:27 #rdie:56 #real:156 #reas:99 #reat:157 #reca:-38 #rece:36 #reci:-29 #rect:25 #reem:71
#refi:-38 #rega:35 #regl:29 #regr:84 #regu:61 #remi:-34 #rend:-54 #reno:-38 #rent:26 #repa:78 #rero:61 #rese:31
#reso:61 #resp:78 #ress:145 #rest:-40 #rett:52 #reve:85 #rful:83 #rged:147 #rgot:69 #riba:25 #ribe:58 #ribl:52
#rice:-44 #ridi:39 #righ:39 #rint:35 #rios:44 #riou:84 #ripp:151 #rite:64 #rive:-105 #rmis:-40 #rned:31 #rnes:-34
#rnin:32 #roba:-41 #robo:27 #rock:-67 #rofe:37 #roke:-100 #romi:72 #rong:76 #rook:34 #rose:100 #rote:48 #roug:67
#rove:36 #rque:41 #rrad:26 #rreg:32 #rrib:50 #rrie:-41 #rson:-67 #rted:-27 #rtie:43 #rude:101 #ruid:-33 #ruin:45
#runs:-33 #rust:151 #ryin:72 #ryth:-83 #saca:170 #sada:28 #said:91 #saje:115 #sale:-66 #salg:-34 #sali:51 #same:98
#sapp:80 #saro:62 #save:-25 #sban:-27 #scam:-36 #sche:-29 #scho:-31 #scon:27 #scri:56 #sday:-59 #seat:119 #sell:61
#send:-60 #sent:64 #seri:104 #sero:72 #shak:-27 #shoc:45 #siad:110 #sick:132 #siem:80 #sien:28 #sign:-54 #sigu:89
#sill:28 #simo:86 #sinc:42 #sing:45 #sito:-65 #sits:59 #sked:61 #slop:29 #smoo:-30 #sold:80 #some:49 #sona:-43
#soon:-39 #sorr:-31 #spec:-31 #sper:109 #spet:60 #spok:35 #sque:-40 #ssed:123 #sses:-26 #ssur:25 #stab:38 #stak:-30
#stat:-27 #sted:57 #ster:68 #stic:91 #stid:40 #stil:130 #stop:-90 #stos:-26 #stra:36 #stri:53 #stuf:84 #stuv:44
#suci:33 #sues:-31 #sure:-32 #swap:-30 #swer:78 #taba:44 #tabl:44 #tact:-38 #take:-74 #tant:128 #tape:31 #tard:46
#tari:-27 #tarm:28 #taro:54 #tart:-47 #tate:-39 #tche:55 #tech:40 #tede:85 #tele:30 #tell:-56 #tenc:80 #tend:34
#teng:-74 #terd:41 #tere:-56 #tero:65 #terr:44 #test:143 #teve:-45 #text:167 #that:43 #then:-36 #ther:47 #they:48
#thir:107 #thos:-31 #thre:105 #thro:64 #thur:-44 #tidi:40 #tien:46 #tier:105 #tigh:-28 #till:79 #tima:36 #time:187
#ting:104 #tire:-54 #tive:-37 #tmen:-32 #toda:104 #todo:-58 #told:150 #toma:-34 #took:110 #tota:-29 #traf:-41
#trai:-26 #trar:-68 #tras:-55 #trat:116 #trea:101 #treg:27 #tres:74 #trip:50 #trus:153 #tter:-30 #ttin:68 #tues:-32
#tuff:84 #tuve:70 #tuvo:29 #twic:187 #uant:-134 #uary:26 #ubca:77 #ucho:86 #ucio:32 #ucks:43 #ueda:-27 #uede:56
#uedo:-65 #ueja:-64 #uelv:30 #uena:-32 #ueno:34 #uent:58 #uerd:-27 #ueri:36 #uess:-33 #uevo:52 #ught:-27 #uick:-44
#uido:-27 #uien:-44 #uier:34 #uine:28 #uldn:60 #ulou:41 #ulpa:37 #ulti:54 #uman:-29 #umbe:-46 #umer:-50 #umpe:51
#unca:102 #undr:25 #unos:41 #unta:61 #unte:63 #uote:51 #upse:47 #urge:-47 #urin:37 #urne:31 #usba:-27 #usca:-29
#ushy:37 #usly:78 #usta:-31 #uste:76 #usto:104 #utes:41 #utom:-27 #vado:-30 #vece:188 #vend:48 #veni:38 #vent:-33
#verc:31 #vibr:-39 #vici:-31 #vier:70 #visa:45 #visi:126 #viso:-36 #voic:54 #volv:114 #vuel:39 #want:-36 #wasn:68
#ways:39 #were:58 #when:-76 #wher:40 #whil:29 #whoe:39 #wice:187 #will:-116 #wipe:38 #with:59 #woke:32 #wond:79
#work:67 #wors:159 #wort:-42 #woul:-27 #writ:58 #wron:76 #wrot:46 #xcel:-25 #xpla:45 #xted:40 #xtin:-25 #yaro:30
#yest:41 #ying:121 #ymor:-25 #your:140 #youv:52 #ythi:-89 %again_later%agree:87 %again_later%away:-115
%again_later%bad:135 %again_later%bring:62 %again_later%busy:-90 %again_later%car_part:102 %again_later%do_it:57
%again_later%doubt:37 %again_later%elsewhere:40 %again_later%family:-42 %again_later%gone_car:39
%again_later%leave_me:-36 %again_later%machine:33 %again_later%money:96 %again_later%on_way:-66
%again_later%opening:52 %again_later%pay_day:-28 %again_later%phone:58 %again_later%place:-30 %again_later%refuse:116
%again_later%season:-33 %again_later%shift_it:26 %again_later%staff:36 %again_later%thanks:58 %again_later%who:75
%again_later%wrong_one:147 %agree:-212 %agree%away:62 %agree%bad:116 %agree%bring:45 %agree%busy:-53
%agree%call_off:43 %agree%car_part:-61 %agree%do_it:-37 %agree%doubt:-73 %agree%elsewhere:50 %agree%fails:26
%agree%how_long:45 %agree%leave_me:70 %agree%message:82 %agree%money:62 %agree%noise:-35 %agree%on_way:104
%agree%opening:48 %agree%pay_day:25 %agree%phone:-62 %agree%question:112 %agree%refuse:189 %agree%season:25
%agree%staff:-48 %agree%start_again:-44 %agree%thanks:-68 %away%bad:-55 %away%call_off:-34 %away%question:-69
%away%refuse:-53 %bad:602 %bad%bring:-28 %bad%busy:43 %bad%call_off:-60 %bad%car:45 %bad%car_part:145 %bad%do_it:101
%bad%doubt:60 %bad%elsewhere:103 %bad%family:98 %bad%gone_car:35 %bad%how_long:72 %bad%leave_me:61 %bad%lift:45
%bad%meaning:-218 %bad%message:72 %bad%money:69 %bad%noise:-31 %bad%on_way:34 %bad%phone:79 %bad%question:34
%bad%refuse:-40 %bad%season:30 %bad%shift_it:62 %bad%staff:310 %bad%start_again:120 %bad%thanks:53 %bring:-45
%bring%busy:-76 %bring%call_off:-42 %bring%do_it:58 %bring%doubt:58 %bring%elsewhere:-29 %bring%how_long:51
%bring%on_way:85 %bring%opening:41 %bring%refuse:-58 %bring%start_again:27 %bring%wrong_one:133 %busy:54
%busy%fails:77 %busy%leave_me:-28 %busy%message:33 %busy%refuse:98 %busy%shift_it:-36 %busy%staff:-40
%busy%thanks:-31 %busy%wrong_one:26 %call_off:-73 %call_off%car_part:43 %call_off%do_it:-104 %call_off%doubt:61
%call_off%elsewhere:57 %call_off%fails:154 %call_off%gone_car:25 %call_off%how_long:90 %call_off%leave_me:37
%call_off%message:-177 %call_off%money:-28 %call_off%noise:37 %call_off%odometer:41 %call_off%on_way:61
%call_off%opening:41 %call_off%phone:56 %call_off%question:174 %call_off%refuse:54 %call_off%shake:-25
%call_off%shift_it:35 %call_off%staff:87 %call_off%start_again:26 %call_off%thanks:30 %call_off%who:40
%call_off%wrong_one:42 %car:-40 %car%car_part:48 %car%do_it:40 %car%fails:-48 %car%gone_car:-122 %car%leave_me:37
%car%lift:-41 %car%meaning:-25 %car%message:27 %car%money:30 %car%odometer:35 %car%on_way:34 %car%pay_day:-33
%car%phone:25 %car%refuse:-126 %car%start_again:47 %car%wrong_one:25 %car_part%do_it:28 %car_part%fails:-93
%car_part%family:-29 %car_part%how_long:41 %car_part%leave_me:-41 %car_part%lift:42 %car_part%meaning:-34
%car_part%noise:-41 %car_part%opening:33 %car_part%phone:28 %car_part%place:-36 %car_part%refuse:123
%car_part%smoke_smell:-44 %car_part%staff:123 %car_part%thanks:69 %car_part%who:52 %do_it:-67 %do_it%elsewhere:-92
%do_it%family:-47 %do_it%how_long:128 %do_it%leak:-29 %do_it%lift:44 %do_it%meaning:34 %do_it%message:-71
%do_it%money:31 %do_it%on_way:51 %do_it%opening:29 %do_it%pay_day:-27 %do_it%phone:36 %do_it%place:45
%do_it%question:62 %do_it%refuse:206 %do_it%season:-37 %do_it%shake:26 %do_it%shift_it:-67 %do_it%start_again:26
%do_it%who:55 %do_it%wrong_one:46 %doubt%gone_car:47 %doubt%how_long:84 %doubt%message:-97 %doubt%money:62
%doubt%on_way:36 %doubt%shift_it:72 %doubt%start_again:-29 %elsewhere%machine:37 %elsewhere%message:34
%elsewhere%money:181 %elsewhere%question:118 %elsewhere%refuse:-133 %elsewhere%shift_it:33 %elsewhere%staff:-36
%elsewhere%start_again:-39 %elsewhere%wrong_one:-55 %fails:-148 %fails%how_long:-47 %fails%meaning:-25
%fails%message:-63 %fails%on_way:-29 %fails%refuse:148 %fails%wrong_one:-58 %family:-38 %family%how_long:28
%family%message:52 %family%money:39 %family%refuse:-39 %family%shift_it:-43 %family%staff:25 %family%thanks:-25
%gone_car:-80 %gone_car%on_way:36 %gone_car%phone:30 %gone_car%question:83 %gone_car%start_again:28
%gone_car%thanks:29 %gone_car%wrong_one:85 %how_long:37 %how_long%message:55 %how_long%money:-62 %how_long%on_way:65
%how_long%opening:30 %how_long%phone:25 %how_long%question:-59 %how_long%refuse:71 %how_long%shift_it:25
%how_long%staff:35 %how_long%wrong_one:64 %leak:-29 %leak%refuse:30 %leave_me%message:-52 %leave_me%on_way:90
%leave_me%opening:31 %leave_me%pay_day:87 %leave_me%question:87 %leave_me%refuse:-31 %leave_me%season:78
%leave_me%staff:34 %leave_me%start_again:-43 %lift:55 %lift%odometer:28 %lift%on_way:-47 %lift%opening:94
%lift%pay_day:32 %lift%phone:35 %lift%question:-55 %lift%refuse:29 %machine:52 %machine%meaning:-28
%machine%message:43 %machine%refuse:49 %meaning:-188 %meaning%money:30 %meaning%on_way:80 %meaning%phone:-69
%meaning%question:-76 %meaning%refuse:-62 %message:165 %message%on_way:267 %message%pay_day:87 %message%phone:-56
%message%question:52 %message%refuse:-116 %message%season:133 %message%shift_it:88 %message%start_again:-278
%message%thanks:-31 %message%who:-26 %money:186 %money%odometer:160 %money%on_way:-56 %money%pay_day:113
%money%phone:39 %money%question:-40 %money%refuse:-27 %money%shift_it:153 %money%staff:48 %money%start_again:67
%money%thanks:163 %money%wrong_one:82 %noise:-82 %noise%question:-28 %noise%refuse:80 %odometer:60
%odometer%pay_day:50 %odometer%phone:-35 %odometer%question:-51 %odometer%refuse:61 %odometer%start_again:53
%on_way:39 %on_way%opening:44 %on_way%phone:64 %on_way%smoke_smell:-32 %on_way%staff:39 %on_way%start_again:-25
%opening%question:-47 %opening%wrong_one:36 %pay_day%phone:29 %pay_day%season:29 %pay_day%shift_it:-35 %phone:-29
%phone%question:-122 %phone%refuse:26 %phone%shift_it:-73 %phone%staff:25 %phone%start_again:52 %phone%who:103
%place:-105 %place%question:-35 %place%refuse:41 %place%staff:-28 %place%wrong_one:73 %question%refuse:-26
%question%season:37 %question%shift_it:79 %question%start_again:-65 %question%thanks:28 %question%who:-72
%question%wrong_one:68 %refuse:-35 %refuse%season:40 %refuse%shift_it:-77 %refuse%staff:156 %refuse%start_again:137
%refuse%thanks:84 %refuse%who:-42 %season%shift_it:-56 %season%who:29 %shake:-122 %shift_it:-50
%shift_it%start_again:-51 %shift_it%thanks:51 %shift_it%wrong_one:-34 %smoke_smell:-86 %staff:85 %staff%thanks:-72
%start_again:-115 %start_again%who:80 %start_again%wrong_one:68 %thanks:-39 %who:-78 %who%wrong_one:27 %wrong_one:-46
@?:-218 @after_visit:260 @after_visit_cant_complain:-62 @after_visit_not_really:66 @car:-102 @confirm:-57 @day:-110
@nothing:46 @odometer:25 @offers:-202 @reading:-63 @time:-141 @walk_in:-52 ^_$:-28 ^_a:-101 ^_al:-51 ^_all:-42
^_and:-35 ^_another:57 ^_any:-42 ^_are:-50 ^_bank:-38 ^_been:38 ^_brakes:-33 ^_broke:-30 ^_cada:28 ^_call:-37
^_can:-154 ^_cant:-90 ^_car:-48 ^_como:-81 ^_cost:-36 ^_could:-39 ^_cuando:-38 ^_cuanto:-110 ^_de:-134 ^_did:-46
^_do:-102 ^_enough:-57 ^_esta:-59 ^_everything:-63 ^_fine:-30 ^_fui:28 ^_gracias:47 ^_great:90 ^_hasta:-35 ^_have:-26
^_hey:-43 ^_how:-93 ^_i:46 ^_id:-26 ^_im:-38 ^_in:-26 ^_is:-181 ^_it:-92 ^_la:95 ^_last:73 ^_les:32 ^_let:-56
^_llamenme:-25 ^_llevo:55 ^_lo:-44 ^_mal:32 ^_meh:79 ^_mejor:-27 ^_mil:32 ^_money:-30 ^_my:-123 ^_nadie:103 ^_nel:25
^_no:86 ^_not:34 ^_nothing:-27 ^_nunca:89 ^_oh:146 ^_oil:-37 ^_on:-25 ^_one:89 ^_only:-26 ^_otro:112 ^_pesimo:43
^_phone:-26 ^_please:35 ^_por:37 ^_prefiero:-31 ^_pues:78 ^_puro:56 ^_quede:100 ^_quedo:-54 ^_runs:-25 ^_sale:-31
^_salio:45 ^_same:29 ^_scratch:-49 ^_se:-42 ^_si:-73 ^_siempre:92 ^_sin:-52 ^_so:32 ^_someone:27 ^_son:102 ^_still:78
^_text:-43 ^_thank:-36 ^_thanks:84 ^_the:184 ^_this:137 ^_todo:-121 ^_too:-26 ^_took:54 ^_tuve:54 ^_ustedes:30
^_uy:33 ^_very:40 ^_we:-28 ^_when:-30 ^_why:118 ^_worst:49 ^_would:-25 ^_wow:61 ^_y:-86 ^_ya:-107 ^_yep:-45 ^_yes:-67
^_yo:-47 ^_you:142 ^_your:165 a:117 a_$:-37 a__car:29 a__for:-31 a__hora:-37 a__is:119 a__of:-32 a__off:153
a__time:-26 a__under:27 a__y:-27 a_day:29 a_good:-29 a_la:-51 a_lot:32 a_month:70 a_phone:39 a_que:-59 a_rip:154
a_ver:26 a_week:118 about_the:31 after:96 after_$:-29 after__you:28 after_the:26 after_you:69 again:31 agua:-31
ahora:43 ahora_si:28 ahorita:-42 aint:-27 al:-69 al_cien:-37 algo:77 all_$:-65 all__my:61 all_day:42 all_good:-51
all_i:29 all_over:72 already_$:-25 already_and:35 always:41 an_hour:31 and:235 and__dont:-40 and__is:27 and__it:-34
and__me:-30 and__not:38 and__one:42 and__want:29 and_dont:-25 and_i:34 and_im:29 and_it:71 and_nobody:78
and_please:26 and_the:28 and_what:-37 and_you:38 and_your:30 anda:-27 ando:-30 annoying:113 annoying_$:102 anos:29
another:36 another_bill:49 answer:37 antes_$:54 any:-98 anymore:-25 appointment:-30 appreciate:27 appreciate_it:37
aqui:-28 are:-81 are_$:-34 are_they:-25 as:-82 as_well:-43 asi:27 asi_no:32 ask:42 ask_me:-36 asked:61 asked_for:48
at:77 at_$:-39 at__counter:70 at__the:85 at_all:-37 at_and:-25 at_in:79 at_work:26 at_your:49 ate:29 ate_my:27
atencion:73 baby:34 baby_$:38 back:63 back_$:73 back__for:26 back__the:-25 back_on:31 bad:-227 bad_$:-160 bank:-59
bank__it:-32 basta:25 bateria:-37 because:31 been:26 been__your:-28 been_to:-30 before:-29 being:141 bendiciones:-25
best:-57 best_$:-54 bet:-28 bien:58 bien_el:52 bill:216 bill_$:44 bill_was:60 bonito:51 brake:-40 brakes:-70
brakes_feel:-27 broke:-78 bucks:45 buenos:25 bumper:49 but:-105 but_the:-47 but_what:-33 by:-52 by__mall:-30
by__name:-25 by_that:-25 by_the:-55 cada:58 call:-95 call_me:-78 called:84 called__back:69 called_me:65 came:44
came_back:-45 can:-262 can__me:-33 can__send:-25 can_i:-56 can_you:-113 cancel_it:29 cancelen:43 cant:-120
cant_complain:-67 cap:51 car:93 car__i:26 cara:74 card:43 care_of:-31 caro:-55 caro_$:-28 carro_$:30
carro__ustedes:-36 cause:44 cerrado:27 changed__oil:37 changed_my:26 changing:88 charge:-58 charge_for:-36
charged:116 charged__for:38 charged_me:59 check:-49 chocaron:-25 cien:-37 cien_$:-35 clase:34 clase_de:35 clientes:28
cobran:-43 cobran_$:27 cobran_por:-38 cobraron:140 cobraron__mas:36 cobraron_de:36 cobro:33 code:-51 come:102
come__it:70 come_back:33 come_in:58 como_la:25 como_me:36 complain:-67 complain_$:-62 complaints:-82 con:199
con__que:40 con__trabajo:29 con_el:87 con_la:55 con_lo:29 con_los:-27 con_un:31 con_ustedes:52 contact:-30
contento:27 contesta:68 corriente:-28 cost:-62 costo:-35 could:-55 could_you:-55 couldnt:34 couldnt_be:33 count:-28
count_me:-25 counter:74 cual:-26 cuanto:-161 cuanto__el:-44 cuanto_me:-50 cuenta:72 da:-75 day:-56 day_$:-64 days:25
de:48 de_$:-47 de__a:42 de__llanta:56 de__llantas:-25 de__manana:38 de__no:-34 de__y:29 de_eso:-28 de_la:41
de_las:-51 de_mas:56 de_que:-52 de_regreso:46 de_respeto:31 dealer:-33 dejaron:103 dejaron_el:37 del:-34 del__me:29
desde:80 desde_que:54 desk:65 devolvieron:81 dia:32 dia_$:26 dias:109 dicho:42 did:-78 did_it:-30 did_my:50
did_that:-43 did_you:-76 didnt:156 dije:91 dijeron:61 dinero:40 do:-187 do_$:25 do__charge:-31 do__guys:-26
do__keep:86 do__own:-27 do_i:-42 do_my:-26 do_not:-30 do_you:-48 doble:30 does:35 does__write:37 does_nobody:42
doing_the:27 dollars:27 dont:-28 dont__me:78 dont__you:101 dont__your:-70 dont_have:-43 dont_know:-28 dont_text:64
dont_want:-25 door:49 dos:160 dos_dias:40 dos_veces:121 down_$:33 down_on:-56 drive:-58 drive_$:-26 drives:-29
drove:39 during:37 duro:56 early:73 early_$:65 el:70 el__a:-28 el__con:26 el__fue:38 el__todo:38 el__y:54 el_carro:57
el_dia:52 el_freno:-25 el_gerente:28 el_muchacho:25 el_numero:-56 el_otro:-44 el_servicio:-35 el_telefono:82
el_trabajo:85 el_trato:33 else:-32 en__dias:28 en__noche:59 en__taller:-41 en_el:-36 en_otro:-36 encargado_$:-28
encontraron:-66 encontraron_$:-59 enough_$:49 entregaron:31 era:38 es_$:-56 es__mismo:30 es_un:49 escriban:37
escriban_$:-40 escriban_mas:-26 escriben:63 ese:-108 ese_servicio:-49 eso:-83 eso_$:-29 esperando:77 espere:43
esta:-179 esta_$:-50 esta_muy:-41 estaba:27 estas:26 estuvo:33 even:49 ever:49 every:57 every__i:47 every_time:47
everything:-83 everything_was:-57 explain:31 falta:43 falta__respeto:31 falta_de:47 far:-36 favor_$:-37 feel:88
feel_like:34 feo:40 few:-25 fine:-33 fine_$:-41 five:59 five_$:25 fix:35 fix_it:26 fixed:50 floor:29 for:99 for__i:32
for__me:-27 for__same:40 for_a:41 for_me:-96 for_nothing:152 for_that:26 forever:99 forever_$:102 forget_it:25
forgot:69 forgot_to:73 four:62 frena:-26 freno:-50 from:-61 from_the:26 from_you:-43 from_your:-31 front_desk:46
fue__que:-31 fue_lo:-31 fui:108 garage:-31 gasto:60 gave:30 gente:43 get:-89 get_a:-37 get_my:-47 get_paid:-26
getting:85 give:-35 give__a:-25 give_me:-36 going:30 going_to:-46 gone:39 good:-111 good_$:-40 got__for:30
got__wrong:-42 got_a:-45 got_it:46 got_my:41 got_the:-47 got_to:-26 gracias_$:-69 gracias__nada:89 gracias_por:79
grease:79 grease__over:55 grease_all:55 great:43 great_$:-56 great__bill:49 great_another:49 great_job:-38 grosero:37
guess:-33 gusto:111 guy_$:-42 guys:-43 guys_$:47 guys_do:-25 guys_still:-37 habia:52 habia_dicho:34 hablar:-45
hablar__el:34 hablar_con:-43 hableme:-26 hablo:29 hace:-26 had:84 had_to:66 hago:-25 happier:-29 happy:93
happy_with:90 has:34 hasta:-70 hasta_que:-39 have__wrong:-36 have_been:47 have_my:-29 have_never:-31 have_no:33
have_the:-39 hay:-50 he:-59 he_llevado:-32 hell:-32 here:-68 here_$:-72 hey:-39 hicieron_esperar:39 high:-32
highway:25 hit:-35 hizo:-27 hood:35 hora_y:27 horas:118 horas_$:42 hours:65 how__was:40 how_bad:-41 how_come:41
how_i:64 how_many:-44 how_much:-54 hoy:31 hubcap:68 human:-27 hundred:28 hung:38 hung__on:38 hung_up:38 husband:-26
i:130 i__a:-41 i__been:28 i__drive:-25 i__for:30 i__it:-30 i__my:-94 i__never:-52 i__off:-32 i__that:36 i__the:-34
i__to:-47 i__today:68 i__told:43 i__with:25 i_asked:26 i_came:32 i_come:51 i_didnt:66 i_do:-31 i_feel:80 i_get:-78
i_got:66 i_hate:26 i_have:41 i_left:55 i_live:-36 i_need:-57 i_paid:57 i_said:-31 i_sat:37 i_think:-42 i_told:42
i_want:34 i_was:200 i_will:-29 id:-29 idea:-46 if__like:47 if_i:-43 igual:53 igual_$:48 ill:-30 im:110 im__of:79
im__the:-29 im__work:47 im_at:52 im_still:64 in_$:-58 in__a:33 in__and:50 in__car:47 in__is:54 in__morning:102
in_a:-54 in_another:-38 in_it:75 in_june:-30 in_my:31 in_the:75 in_your:32 interesa:-35 interested:-25 invoice:47
ir:-30 is_$:-70 is__a:-106 is__bad:-37 is__bill:-30 is__i:60 is__new:61 is__than:39 is__the:31 is_all:27
is_getting:93 is_in:34 is_it:-53 is_not:-28 is_plenty:32 is_something:61 is_still:25 is_texting:-26 is_that:-42
is_there:-48 is_this:-60 is_tight:-28 is_wrong:35 is_your:-39 issues:-31 it:52 it_$:-37 it__getting:31 it__in:57
it__not:27 it__ok:-43 it__to:-26 it_back:-33 it_in:-36 it_is:167 it_still:56 it_took:26 it_was:-28 it_you:31 jaja:-46
jala:-35 june:-38 june_$:-41 just:37 just__i:75 keep:64 keep__me:76 keep_texting:69 kept:128 key:39 key_$:31 keys:38
know:-62 know_$:-25 know_you:-40 la:124 la__es:35 la__no:50 la__pasada:32 la__vez:159 la_atencion:43 la_bateria:-27
la_cara:73 la_casa:-27 la_cuenta:60 la_lista:-31 la_llamada:-27 la_manana:38 la_noche:72 la_otra:98 la_puerta:26
la_ultima:51 la_verdad:43 la_vez:32 las__la:46 las_de:53 las_llantas:-39 last:112 last__and:57 last__you:66
last_bill:29 last_month:-40 last_night:-58 last_time:221 last_visit:73 last_week:-71 late_$:-45 later:-50 later_$:-29
le:-249 le__el:-37 le__la:-29 le__servicio:-27 le_hicieron:-76 le_pusieron:-25 left:203 left_$:-34 left__all:46
left_a:93 left_grease:48 les:120 les_dije:36 let:-78 let_me:-52 lied:50 lied_to:43 light__on:28 list:-45 list_$:-49
live:-39 live_in:-33 llamada:-33 llamada_$:-38 llame_el:-27 llanta:29 llanta_$:39 llantas:-38 llantas_$:-33 llego:-25
llegue:27 llevado:-32 llevo:40 lo:-100 lo__a:-36 lo__ahi:30 lo__con:67 lo__el:-39 lo__en:-28 lo__me:33
lo_hicieron:-66 lo_mismo:48 lo_que:50 lo_robaron:-34 lol:-78 lol_$:-36 look:-25 look_at:-36 loose:56 loose_$:52
los:-102 los_mensajes:-78 lose:26 lost:25 lost_my:56 lot:62 lunes_$:-25 luz:-25 made:33 makes:64 makes_the:60
mal_$:-94 mal_el:-42 mal_servicio:65 mala:44 mall:-30 mall_$:-30 malo:-65 man:30 manager:52 manana_$:-30 mandan:62
mandarme:-26 manden:-51 manden_nada:-45 manners:85 many:143 many_texts:157 mas:61 mas__menos:30 mas_mensajes:-31
mas_o:30 mas_que:45 me:140 me_$:-92 me__a:-32 me__algo:89 me__bien:26 me__como:48 me__el:51 me__en:32 me__esperar:40
me__hablar:-36 me__hicieron:-51 me__horas:32 me__im:48 me__in:43 me__june:-42 me__la:48 me__mal:51 me__mas:-74
me__mensajes:72 me__my:-29 me__nada:38 me__por:-29 me__que:27 me__quejar:-45 me__robaron:-43 me__una:27 me__you:-25
me__your:-43 me_about:-45 me_again:-85 me_back:31 me_cobraron:120 me_da:-75 me_dejaron:92 me_escriban:50
me_escriben:64 me_espero:-26 me_every:43 me_for:59 me_gusto:107 me_hicieron:78 me_i:-36 me_in:-96 me_interesa:-34
me_it:25 me_late:-28 me_llame:-35 me_lo:-76 me_mandan:25 me_manden:-40 me_off:-86 me_puede:-29 me_pueden:-28
me_puedo:-46 me_quede:-32 me_quedo:-26 me_rayaron:27 me_sale:-28 me_salio:71 me_so:127 me_stuff:55 me_tienen:59
me_today:31 me_trataron:38 me_twice:32 me_up:-37 me_urge:-42 me_with:-34 meant:-31 mecanico_$:-25 meh:77 mejor:-72
menos:27 mensaje:117 mensaje_$:43 mensajes_$:-79 messages_$:-38 messed:29 mi:108 mi__de:72 mi_carro:34
mi_telefono:-37 mine:-28 minutes:41 mismo:63 mismo_dia:-28 missing:38 molesto:51 money:72 money_$:52 money__tight:-29
money_is:-29 month_$:-43 month__plenty:27 month_is:94 more:114 more_$:-31 more_texts:-29 morning:50 morning_$:65
mostrador:39 muchacho:28 mucho:29 must_have:-26 muy:110 muy_caro:-35 my:225 my__a:31 my__back:72 my__go:27 my__has:26
my__is:-57 my__refund:-67 my__was:54 my_bill:117 my_bumper:38 my_car:191 my_card:33 my_door:37 my_hubcap:65
my_money:29 my_oil:70 my_phone:-27 my_radio:34 my_refund:28 my_schedule:-38 my_seat:78 my_tax:-71 my_tires:27
nada:145 nada_$:177 nada__ustedes:-29 nadie:210 nadie_me:73 name:-37 necesito:-63 need:-160 need_to:-52 needed:43
nel:25 never:28 never__me:57 never__to:-27 never_been:-45 never_called:42 new:-29 new_$:36 next:-54 ni:64 ni_me:50
nine:29 no:33 no_$:-29 no__a:-44 no__at:-43 no__bien:106 no__con:25 no__de:-44 no__en:76 no__escriban:76
no__gusto:107 no__here:-45 no__last:27 no__lo:39 no__manden:-32 no__me:29 no__mensajes:-37 no__nada:52 no__puedo:-46
no__que:-54 no__quiero:26 no__texts:-37 no__vale:41 no_and:31 no_como:30 no_complaints:-82 no_es:-30 no_esta:-25
no_hay:-34 no_issues:-31 no_it:96 no_me:56 no_more:-90 no_one:57 no_quede:72 no_quedo:132 no_quiero:-40 no_se:47
no_sigue:67 no_soy:-40 no_tengo:-54 no_y:56 no_you:81 nobody:218 nobody__a:25 nobody_here:-36 noche:83 noche_$:71
noise_$:56 nomas:42 none:32 not:153 not__after:51 not__and:-31 not__car:-57 not__it:27 not__me:-31 not__now:-28
not__this:-25 not__to:-33 not__with:138 not_a:-50 not_going:85 not_happy:159 not_me:-30 not_my:-71 not_now:-30
not_ok:60 not_really:85 not_the:-32 not_today:-32 not_worth:-41 nothing:105 nothing_$:159 now:-112 now_$:-54 nuevo:56
nuevo_$:59 number:-43 number_$:-33 numero:-82 numero_$:-63 nunca:107 nunca_me:120 o:-38 o_menos:30 ocupo:-30 of:139
off:78 off_$:185 off_your:-28 oh:140 oh__another:86 oh_great:49 oil:68 oil_$:25 oil__came:34 oil_cap:39 oil_light:46
ojala:32 ok_but:-31 on__phone:37 on__refund:61 on__seat:30 on__th:-26 on__way:-44 on_my:40 on_the:30 on_time:35
once:41 one:130 one_$:-48 one__a:70 one__and:35 one_text:74 only:-46 open:-68 or:-90 otra__me:42 otro__mas:72
otro_taller:-56 out__my:48 out_of:46 over:47 over_my:54 overcharged:31 pague:52 paid:34 para:-77 para_que:-36
para_un:29 part:37 pasada:31 pasar:-41 pass:-27 pay_for:42 paying:-41 pedal:-34 pedi:26 people:120 people_$:-38
people_are:43 peor:149 permission:-25 person:-25 persona:-47 persona_$:-27 pesimo:88 pesimo_servicio:41 phone_call:31
phone_me:-28 pieza:31 please_$:-57 plenty:52 plug:57 poca:56 pocket:41 poner:89 pongan:46 por:40 por__el:27
por__me:96 por__no:-95 por_eso:-25 por_favor:-26 por_la:-25 por_lo:32 por_nada:95 por_que:40 porque:33 precio:-72
precio_$:-36 prefiero:-38 preguntar:28 pricey:-35 promised:64 puede:-29 pueden:-51 puedo:-89 puedo_quejar:-45
puerta:26 pues:102 pues_$:25 pues_no:74 puro:56 put:60 put_me:-31 put_the:58 que:147 que_$:-28 que__con:66
que__de:147 que__el:-39 que__ese:-32 que__hicieron:-33 que__llame:-30 que__lo:-39 que__mal:-73 que__malo:-47
que__otro:38 que_antes:74 que_es:-82 que_falta:30 que_fue:-25 que_hora:-40 que_le:-93 que_mal:54 que_me:-37
que_precio:-29 que_tan:-105 que_tanto:46 que_voy:25 quede:142 quede_muy:109 quedo:25 quedo_$:25 quedo__el:39
quedo_bien:46 quejar:-45 quick:-43 quienes:-39 quienes_son:-39 quieren:122 quiero:-32 quiero__de:-39 quiero__me:-45
quiero_nada:-34 quiero_que:-48 quote:36 quote_$:76 radio:49 rayaron:30 really:119 really_$:106 recibir:-29
recordatorios:30 reembolso:72 regresaron:27 regreso:57 remind_me:-36 repair:81 respeto:54 ridiculous:41
ridiculous_$:25 right:33 right__you:36 right_after:36 right_now:-41 rip:154 ripped:101 robaron:-61 robo:43 rock:-67
rude:101 rude_$:77 ruido:-26 runs:-33 saben:-25 sacan:90 sacar:31 said:91 sale:-94 salgo:-25 salio:101 salir:-59
salir_$:-28 same:106 sat:30 say:47 schedule:-49 scratch:-41 scratch_me:-26 scratch_that:-26 scratched:30
scratched_my:28 se:-53 se_me:-98 se_vale:41 seat:77 seat_$:54 seats:41 see:-68 sell:51 send:-62 send_me:-44
senor_$:-27 sent:28 service:26 servicio:-31 servicio_$:-26 shop:32 shop_$:-38 shop_is:39 si:-52 si_$:-32 si__bien:-33
sick:132 sick_of:137 siempre:80 sign:-31 sigue:102 sigue_igual:61 sin:30 since:42 since_$:-27 six:27 sloppy:29
slow:27 so:110 so_$:-28 so_far:-34 so_no:25 some:50 someone__me:-26 somewhere:37 son:122 son__de:60 son_las:45
soon:-35 sorry:-31 soy:-80 st:-29 state:-26 still:132 still__about:45 still__on:68 still_on:-26 still_waiting:69
stop:-64 stop_$:-29 stuff:84 stuff_$:54 su:61 sucio:32 sure:-44 take:-30 take__off:-66 take_me:-65 taller:29
taller_$:68 tan__esta:-62 tan_mal:-44 tan_malo:-41 tanto:122 tardan:-28 tax:-99 tax_refund:-70 te:-25 tech:33
telefono:41 tell:-59 tell_me:-36 temprano:45 temprano_$:57 ten:41 tengo:-55 terrible:44 text:161 text_$:-26
text__about:-32 text__again:-52 text_you:-32 texted:40 texting:-25 texting_$:-43 texting_me:69 textos_$:-31 th:-53
th_$:-31 than:88 than_the:31 thank:-119 thank_you:-116 thanks:30 thanks_$:-47 thanks__nothing:144 thanks__the:-30
thanks_for:92 that:43 that_$:-68 that__text:30 that__the:39 that_bad:-29 that_is:34 that_name:-25 the:42 the__and:-46
the__came:-32 the__guy:-39 the__in:27 the__last:-29 the__light:30 the__oil:45 the__on:33 the__text:53 the__you:99
the_baby:28 the_best:-53 the_car:-46 the_counter:32 the_day:-28 the_dealer:-27 the_kid:28 the_last:45 the_light:-36
the_mall:-30 the_morning:102 the_noise:33 the_oil:25 the_old:36 the_phone:69 the_price:38 the_quote:75 the_repair:36
the_texts:-76 the_th:-49 the_tires:-27 the_warranty:27 the_work:59 then:-36 there__a:42 there_a:-40 there_with:31
they:44 thing_$:-39 thing_to:46 think_you:-32 third:102 third_time:50 this__me:-25 this__the:49 this_a:-41
this_is:166 this_week:27 those:-31 three:112 three_times:30 through:72 tienen:32 tight:-36 til:-55 till:-49
till_the:-30 time:83 time__you:-30 time_and:43 time_i:45 time_you:33 times:119 tire:-42 to:47 to__back:43 to__for:36
to__me:61 to__my:54 to__shop:-38 to_come:31 to_me:49 to_my:38 to_put:37 to_sell:53 to_text:-51 to_the:-28 to_you:-35
to_your:-29 toda:27 todavia:38 todavia_no:-41 today:42 today_$:47 todo:-62 todo__dia:84 todo_bien:-58 todo_el:80
told:150 told_me:48 told_you:39 too:-63 too_$:-218 too__for:-34 too__texts:85 too_many:112 too_much:32 took:110
took__to:-29 took_it:-29 top_$:-26 top_off:31 trabajo:38 trabajo_no:58 traded:-25 traffic:-37 traffic_is:-36
tratar:25 trataron:38 trato:40 treated:89 tres:81 tres__que:31 tres_veces:39 trust:152 try:-25 turn:-26 tuve:69
tuve_que:63 twice:187 twice_$:47 two:94 two_hours:32 ultima:49 ultima__me:47 ultima_vez:40 un:112 un__y:25 una:157
una__de:60 una__en:28 una__y:63 una_hora:55 uno:94 uno_$:50 unos:41 up:-26 up_$:-30 up_on:25 urge:-43 ustedes:85
ustedes_$:51 uy:33 va:-35 vale_$:39 veces:188 veces_$:95 vender:38 venia:30 ver:57 vez:105 vez_$:-65 vez__dejaron:28
vez__me:27 vez_me:75 vez_pasada:32 vez_que:35 vibrates:-33 viernes:-34 visit:77 visit_$:30 voy_a:-60 voy_me:53
voy_pero:30 vuelvo:25 wait:-107 wait_$:-25 waited:63 waiting:34 waiting__my:-27 want_my:26 want_to:-35 was:179
was__and:71 was__but:-45 was__last:-57 was__there:94 was__to:28 was_in:-50 was_just:74 was_rude:47 was_told:44
wasnt:68 way:113 way_$:-32 way_too:151 we:-62 week:40 week_$:-53 week_is:29 well_$:-31 were:40 what__it:26
what__the:-71 what__you:-73 what__your:-51 what_a:184 what_do:-31 what_i:100 what_is:-91 what_time:-35 what_was:-37
what_you:38 wheel_is:-25 when:-59 while:30 while_im:48 who:-44 who_is:-52 who_you:-27 whoever:29 why:108 why__you:133
why_are:54 why_do:82 why_not:-44 will:-124 will__be:-29 with:67 with_$:33 with__i:51 with__texts:-59 with_a:29
with_your:43 woke:32 wonderful:83 work:104 work_$:109 works:-26 worse:96 worse_$:97 worst:63 worth:-42 would:-54
wouldnt:27 wow:94 write:55 write__down:46 wrong:76 wrong_$:26 wrong_guy:-39 wrong_person:-31 wrote:46 y:270 y__me:97
y__no:26 y__que:-39 y_cuanto:-30 y_el:-27 y_le:-28 y_me:50 y_nadie:69 y_ni:78 y_no:43 y_quiero:27 y_ya:57 ya:44
ya_$:34 ya__con:-25 ya__hicieron:-44 ya__lo:-55 ya__voy:39 ya_le:-57 ya_me:-60 ya_no:-33 ya_se:44 ya_van:27 yep:-47
yes:-95 yes_$:-45 yesterday:41 yo:-34 yo_no:-43 you:242 you_$:-220 you__a:55 you__are:28 you__at:33 you__for:-31
you__grease:29 you__have:-40 you__i:-27 you__me:112 you__my:186 you__so:68 you__still:-37 you__texting:89
you__the:-47 you__to:94 you_are:-37 you_bet:-28 you_can:-53 you_charge:-54 you_charged:50 you_close:-28 you_dont:-28
you_forgot:45 you_got:-73 you_guys:-46 you_had:39 you_have:-72 you_keep:102 you_left:145 you_like:37 you_lost:49
you_never:76 you_open:-51 you_people:97 you_promised:29 you_put:51 you_said:88 you_say:26 you_send:-31 you_take:43
you_tell:-28 you_text:96 you_there:-27 your:158 your__and:46 your__desk:40 your__for:-34 your__have:46 your_front:40
your_guy:40 your_hours:-38 your_the:-47 youve:52 youve__me:46
"""
