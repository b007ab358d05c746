"""What speaks for and against `complaint`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "complaint"
BIAS = -132
WEIGHTS = """\
#abla:-18 #acan:66 #acar:64 #acce:55 #acti:-46 #adie:126 #adio:27 #ados:74 #affi:-24 #afte:32 #agai:21 #agar:-25
#agen:-21 #agua:-26 #aigo:-19 #aint:-88 #aite:44 #aiti:22 #aken:-21 #akes:-34 #aler:-27 #algo:52 #algu:-36 #alin:37
#alio:69 #alir:-31 #alle:72 #alls:-25 #ally:68 #alwa:41 #amad:-28 #amar:18 #amba:31 #amen:-18 #amos:-19 #anda:-19
#ande:-30 #andl:-20 #ange:-27 #angi:66 #anic:-22 #anne:70 #anno:91 #answ:47 #anta:72 #anym:-19 #apol:29 #appi:-21
#appo:27 #appy:70 #apun:-33 #arag:-19 #aran:27 #arca:-71 #arda:42 #arge:42 #aria:-23 #arle:29 #arlo:-19 #arly:51
#aron:335 #arou:-18 #arra:-25 #arro:20 #asad:25 #asar:-30 #aske:38 #aski:20 #asnt:54 #asta:-44 #aste:-51 #asti:69
#atar:37 #atch:19 #ated:50 #aten:51 #ates:-40 #atic:-22 #atie:19 #atur:-20 #augh:24 #ause:24 #auto:-37 #avia:28
#avor:-54 #ayar:18 #ayin:-39 #back:69 #baja:-26 #band:-22 #bank:-34 #baro:-63 #bebe:18 #befo:-23 #bein:95 #bend:-18
#best:-42 #bett:-18 #bien:59 #bill:211 #blan:-20 #blar:-32 #bles:-24 #body:136 #bols:56 #boni:42 #brak:-70 #bran:-25
#brar:101 #brat:-29 #brok:-61 #buck:39 #burn:18 #busi:127 #cada:38 #call:-29 #came:34 #cans:63 #cant:-80 #cara:67
#card:26 #caro:-55 #caus:25 #ccep:44 #cell:-28 #cepc:32 #cept:34 #cesi:-48 #chan:44 #char:57 #chec:-42 #chos:56
#cida:18 #cien:-36 #ciga:21 #cion:37 #cios:22 #cita:-24 #cked:49 #cker:31 #cket:38 #clar:-18 #clas:35 #clie:22
#clos:-34 #cobr:83 #come:84 #comp:-116 #conf:105 #cont:34 #cort:-27 #cosa:21 #cost:-71 #coun:26 #crat:24 #crib:53
#croo:23 #ctiv:-45 #cuan:-116 #cuen:32 #cuer:-25 #culo:32 #culp:27 #curi:-19 #daro:75 #davi:28 #deal:-21 #deja:38
#deje:-19 #dejo:18 #derf:59 #desd:45 #desk:38 #desp:-22 #devo:84 #dias:18 #didn:112 #dier:46 #diga:-28 #digo:-18
#dije:47 #dine:28 #dios:-25 #dirt:46 #disa:66 #dobl:20 #dond:-30 #done:-38 #door:35 #dred:28 #driv:-65 #dule:-34
#dura:-18 #duro:39 #eale:-27 #eall:87 #eant:-23 #earl:42 #ease:57 #eate:58 #ecal:-23 #ecep:28 #eces:68 #echa:-29
#echo:19 #ecio:-32 #edal:-30 #edan:-24 #eded:31 #eden:-37 #edes:75 #edul:-34 #eede:31 #eeks:-22 #eels:-19 #efie:-30
#efon:34 #efor:-23 #egan:34 #egla:18 #egre:58 #egun:25 #eing:104 #ejar:35 #ejem:-19 #ejor:-41 #elef:34 #elic:19
#elva:18 #elve:19 #emin:-28 #empr:90 #enca:-22 #enci:36 #enco:-47 #ende:42 #endi:-41 #enes:-26 #engo:-24 #enor:-19
#enos:24 #ensa:115 #ensi:-22 #enta:36 #entl:20 #ento:36 #ents:-21 #eopl:102 #epai:54 #epci:32 #epta:44 #eran:28
#erch:29 #erda:25 #erdi:38 #ered:19 #eren:86 #eres:-43 #erfu:59 #erie:37 #erio:67 #erne:-26 #eron:201 #eros:105
#erri:28 #erso:-44 #eryt:-57 #esar:60 #esco:24 #escr:56 #esda:-25 #esde:45 #esim:55 #esit:-46 #espe:115 #espu:-19
#esse:105 #essu:22 #esta:-44 #este:26 #esto:18 #estu:27 #eter:-23 #ethi:33 #etie:20 #etti:46 #ever:88 #evis:-22
#evol:84 #expe:23 #expl:35 #extr:22 #falt:50 #favo:-54 #feel:35 #fell:-18 #fend:24 #fier:-31 #filt:37 #fine:-23
#five:22 #fixe:48 #fono:35 #fore:55 #forg:54 #form:94 #four:56 #fren:-29 #fron:22 #fter:32 #fund:-27 #gado:-23
#gain:21 #game:-31 #gara:-22 #garo:22 #garr:-25 #gast:50 #gave:27 #gere:19 #gett:63 #ging:70 #give:-42 #glar:24
#goin:20 #gone:27 #good:-87 #grea:86 #gres:60 #gros:79 #gual:45 #guen:-20 #gues:-25 #guie:-25 #guna:-30 #gunt:41
#gust:59 #guys:-39 #habl:-42 #hace:-39 #hake:-28 #hang:51 #hank:-65 #happ:50 #harg:54 #hast:-36 #hate:20 #hear:-18
#heat:-18 #hech:20 #heck:-37 #hedu:-34 #heel:-20 #here:-18 #high:24 #hile:30 #hing:20 #hink:-28 #hird:67 #hizo:-23
#hock:33 #hoev:22 #hood:34 #hora:83 #hori:-19 #hose:-19 #hour:47 #hree:46 #hrou:59 #hund:27 #hurs:-43 #husb:-20
#iado:74 #iben:44 #ibir:-22 #ibra:-36 #icio:-26 #icke:18 #icul:32 #idad:22 #iday:-19 #idea:-33 #idnt:112 #iemp:68
#ienc:25 #iene:-41 #ierd:-18 #iere:78 #iern:-26 #iero:127 #ieza:37 #igar:21 #ight:29 #igua:44 #igue:60 #ijer:38
#ills:57 #ilte:19 #imes:77 #ince:19 #inco:67 #inde:-23 #inea:36 #ined:37 #iner:34 #ingu:-29 #inst:-18 #inte:18
#intm:-28 #ints:-46 #inut:31 #invo:31 #iona:20 #ione:-19 #ious:65 #ippe:117 #irad:-19 #isap:66 #ised:43 #isio:-18
#isit:123 #ismo:18 #ista:-41 #iste:34 #isto:-18 #ited:37 #itin:21 #iven:-25 #ives:-20 #ixed:42 #jaja:-40 #jaro:43
#jeme:-18 #jero:25 #june:-37 #junt:-22 #just:56 #keep:35 #keys:32 #kind:-26 #know:-47 #lain:-86 #laro:34 #last:111
#late:-35 #ldnt:43 #lefo:34 #left:146 #lega:34 #lema:36 #leme:-25 #lest:52 #leva:-26 #lgun:-26 #lici:23 #lied:49
#lien:22 #ligh:-19 #line:28 #list:-55 #live:-39 #llas:-24 #lled:83 #lleg:34 #ller:23 #llev:-21 #lock:18 #look:-38
#loos:35 #lose:-22 #lost:26 #ltim:36 #luga:-20 #lway:41 #mada:-28 #made:22 #make:45 #mala:47 #mall:-32 #malo:-40
#mand:-44 #mani:43 #mann:70 #many:99 #marc:-66 #mber:-35 #mbol:53 #mean:-30 #mejo:-41 #meno:20 #mens:104 #ment:-86
#mero:-70 #meth:33 #mind:-57 #minu:31 #mise:33 #miss:-19 #mist:-23 #mole:52 #mond:-25 #mone:69 #mont:26 #moot:-20
#more:86 #morn:24 #moth:19 #move:-19 #mpla:-95 #mple:20 #mpra:25 #mpre:144 #much:57 #nada:97 #nadi:126 #name:-41
#ncio:52 #ncon:25 #ndan:21 #ndar:-24 #nday:-29 #nden:-38 #nder:69 #ndre:27 #nece:-49 #need:-55 #nera:25 #nero:37
#ners:68 #next:-36 #nfor:74 #nfun:-34 #ngan:20 #nger:18 #ngin:50 #ngun:-28 #nigh:43 #nine:19 #ning:-23 #nish:-18
#nito:25 #nner:63 #nnoy:91 #nobo:131 #noch:44 #noma:34 #noth:89 #noyi:81 #nsaj:98 #nswe:47 #ntac:-25 #ntad:32
#ntar:27 #ntas:40 #nted:74 #ntes:123 #ntis:-21 #ntly:20 #ntme:-28 #ntra:-61 #nuev:28 #numb:-32 #nume:-56 #nunc:85
#nuto:19 #nuts:-20 #nvoi:32 #nymo:-19 #obar:-52 #oble:39 #obod:131 #obra:50 #obro:26 #oche:43 #ocke:97 #odav:28
#oday:32 #oice:35 #oint:41 #oles:40 #olog:29 #olvi:70 #omas:32 #omat:-18 #omer:-18 #omet:26 #omis:33 #ompl:-91
#onal:18 #onda:-22 #onde:33 #oned:27 #oner:60 #oney:54 #onfi:69 #onfu:-35 #onit:39 #only:-34 #onsi:-18 #onta:-21
#onte:111 #onth:27 #ontr:-55 #oose:35 #ooth:-20 #open:-38 #ople:107 #oras:74 #orde:70 #orev:78 #orgo:56 #orks:-21
#orma:18 #orme:72 #orni:23 #orre:22 #orri:-22 #orry:-20 #orse:50 #orst:55 #orth:-35 #orto:-18 #oser:64 #otal:-25
#othi:73 #otro:34 #ough:19 #ould:-62 #ound:-38 #ount:25 #ours:48 #ousl:68 #over:34 #owns:37 #oyin:81 #paid:22
#pair:56 #para:-65 #pare:18 #pasa:-19 #paso:-20 #pass:-24 #payi:-35 #pcio:27 #peda:-31 #pens:-41 #peop:102 #pera:44
#perd:70 #pero:-33 #pers:-39 #pesi:55 #peto:35 #pier:-25 #piez:37 #ping:-20 #plai:-82 #plen:31 #plug:48 #poin:35
#poke:31 #polo:29 #pone:59 #pped:89 #ppoi:27 #pran:28 #prec:-31 #pref:-32 #preg:41 #pren:-33 #pres:111 #pret:22
#pric:-22 #prom:42 #pued:-114 #pues:70 #pull:-36 #puro:61 #quea:-19 #qued:118 #quej:-18 #quic:-28 #quin:-20 #quit:-37
#quot:21 #raba:25 #rade:-26 #radi:36 #raff:-23 #raig:-21 #rain:45 #raje:20 #rake:-68 #rand:39 #rang:-19 #rano:21
#raro:59 #rata:50 #ratc:24 #raya:21 #rcar:-47 #rcha:23 #rdar:60 #rden:61 #rder:28 #real:92 #reas:53 #reat:119
#reca:-24 #reci:-31 #rect:20 #reem:54 #refi:-30 #refu:18 #regr:58 #regu:40 #remi:-29 #rend:-34 #reno:-24 #rent:26
#repa:57 #rero:23 #reso:51 #resp:40 #ress:93 #rete:20 #reve:70 #rful:59 #rged:102 #rgot:56 #ribe:43 #ribl:34 #righ:33
#rint:21 #rios:24 #riou:66 #ripp:112 #rive:-64 #rned:21 #rnes:-24 #rnin:19 #roba:-55 #robo:19 #rock:-54 #roke:-61
#romi:33 #rong:42 #rook:23 #rose:67 #rote:32 #roug:52 #roun:-20 #rrib:34 #rrie:-34 #rsda:-27 #rson:-44 #rtie:35
#rude:47 #ruid:-18 #rust:115 #ryin:48 #ryth:-57 #saca:127 #sada:22 #said:80 #saje:103 #sale:-38 #sali:53 #same:48
#sapp:66 #saro:43 #sban:-20 #sche:-34 #scon:29 #scra:18 #scri:45 #sday:-52 #seat:65 #sell:49 #send:-47 #seno:-19
#sent:53 #seri:77 #sero:53 #shak:-30 #shoc:33 #sick:94 #siem:70 #sign:-45 #sigo:21 #sigu:44 #simo:57 #sinc:31
#sing:25 #sion:-24 #sito:-43 #sits:54 #sked:38 #skin:20 #slow:25 #smoo:-20 #sold:70 #some:18 #sona:-31 #soon:-30
#sorr:-20 #spec:-24 #sper:79 #spet:34 #spok:31 #spue:-19 #sque:-24 #ssed:89 #ssur:22 #stak:-22 #stat:-20 #sted:67
#ster:57 #stic:70 #stil:113 #stop:-59 #stre:18 #stri:44 #stuf:74 #stuv:28 #swer:47 #tabl:37 #tact:-25 #tain:18
#take:-32 #talk:-23 #tall:28 #tand:21 #tant:101 #tard:49 #taro:28 #tart:-31 #tate:-28 #tche:37 #tech:46 #tede:75
#tele:28 #tell:-46 #tenc:54 #teng:-43 #tent:27 #terd:31 #tere:-40 #tern:-19 #terr:28 #test:78 #text:126 #then:-27
#thir:66 #thos:-25 #thre:43 #thro:52 #thur:-43 #tier:69 #tigh:-29 #till:67 #tima:19 #time:149 #ting:57 #tira:-23
#tire:-43 #tive:-31 #tmen:-28 #tmrw:-19 #toda:77 #todo:-29 #told:87 #toma:-21 #tome:-21 #took:61 #topp:-19 #tota:-25
#trab:18 #traf:-24 #trai:-40 #trar:-48 #trat:69 #trea:84 #trip:41 #trus:115 #tter:-36 #ttin:50 #tues:-24 #tuff:74
#turn:-37 #tuve:63 #tuvo:22 #twic:98 #typi:19 #uand:-21 #uant:-88 #ucho:56 #ucks:40 #ueda:-20 #uede:49 #uedo:-28
#uelv:24 #uena:-25 #uent:30 #uerd:-24 #uess:-21 #ueve:-27 #uevo:47 #ugar:-20 #uick:-28 #uien:-61 #uier:44 #uldn:43
#ulls:-26 #ulti:35 #umbe:-32 #umer:-39 #unca:79 #unde:-31 #undr:27 #unos:42 #unta:30 #unte:45 #uote:21 #urge:-44
#ursd:-27 #urth:18 #usba:-20 #usin:-24 #usly:68 #usta:-19 #uste:71 #usto:81 #utom:-18 #utos:19 #vale:23 #vece:117
#vend:27 #verc:29 #very:-19 #vibr:-35 #vice:19 #viej:22 #vier:49 #view:18 #visi:111 #viso:-27 #voic:35 #volv:89
#wasn:55 #ways:41 #week:-26 #well:-24 #were:29 #whee:-20 #when:-33 #whil:30 #whoe:22 #wice:98 #will:-70 #wipe:21
#with:64 #wond:59 #work:37 #wors:106 #wort:-34 #woul:-38 #wron:42 #wrot:34 #xpli:21 #yaro:18 #yest:31 #ying:83
#ymor:-19 #your:79 #ythi:-59 %again_later%agree:31 %again_later%away:-52 %again_later%bad:68 %again_later%bring:49
%again_later%busy:-47 %again_later%car:22 %again_later%car_part:92 %again_later%do_it:52 %again_later%doubt:32
%again_later%elsewhere:41 %again_later%family:-18 %again_later%gone_car:35 %again_later%leave_me:-21
%again_later%lift:21 %again_later%machine:34 %again_later%money:83 %again_later%on_way:-20 %again_later%opening:43
%again_later%pay_day:-20 %again_later%phone:65 %again_later%refuse:54 %again_later%season:-42
%again_later%shift_it:29 %again_later%staff:41 %again_later%start_again:42 %again_later%thanks:38 %again_later%who:50
%again_later%wrong_one:115 %agree:-197 %agree%away:51 %agree%bad:86 %agree%busy:-43 %agree%call_off:83
%agree%car_part:-19 %agree%doubt:-44 %agree%elsewhere:21 %agree%fails:37 %agree%how_long:24 %agree%leave_me:29
%agree%message:99 %agree%money:28 %agree%noise:-21 %agree%on_way:60 %agree%opening:18 %agree%question:103
%agree%refuse:214 %agree%staff:-46 %agree%start_again:-22 %agree%thanks:-61 %away%car:-24 %away%car_part:-27
%away%do_it:-22 %away%pay_day:-20 %away%question:-38 %bad:466 %bad%bring:-43 %bad%busy:20 %bad%call_off:-41
%bad%car:41 %bad%car_part:62 %bad%do_it:58 %bad%doubt:30 %bad%elsewhere:60 %bad%family:81 %bad%gone_car:34
%bad%how_long:51 %bad%leave_me:22 %bad%lift:36 %bad%meaning:-140 %bad%message:27 %bad%money:53 %bad%noise:-30
%bad%odometer:30 %bad%on_way:22 %bad%phone:64 %bad%question:-18 %bad%refuse:-36 %bad%season:33 %bad%staff:208
%bad%start_again:72 %bad%thanks:34 %bad%wrong_one:42 %bring:-45 %bring%busy:-62 %bring%do_it:36 %bring%doubt:34
%bring%leave_me:-28 %bring%message:-19 %bring%on_way:69 %bring%opening:24 %bring%refuse:-53 %bring%shift_it:-34
%bring%start_again:24 %bring%wrong_one:85 %busy:45 %busy%car_part:-27 %busy%elsewhere:-22 %busy%fails:61
%busy%leave_me:-23 %busy%message:35 %busy%money:-30 %busy%phone:-21 %busy%refuse:94 %busy%shift_it:-24
%busy%staff:-26 %busy%thanks:-28 %call_off:-26 %call_off%car:-49 %call_off%do_it:-88 %call_off%doubt:51
%call_off%elsewhere:39 %call_off%fails:100 %call_off%how_long:77 %call_off%message:-149 %call_off%noise:37
%call_off%odometer:36 %call_off%on_way:19 %call_off%opening:29 %call_off%phone:36 %call_off%question:99
%call_off%refuse:57 %call_off%shake:-22 %call_off%shift_it:43 %call_off%staff:85 %call_off%who:32
%call_off%wrong_one:74 %car:-46 %car%do_it:35 %car%fails:-28 %car%gone_car:-91 %car%lift:-27 %car%message:-25
%car%odometer:32 %car%on_way:25 %car%pay_day:-23 %car%question:-25 %car%refuse:-100 %car%season:-20
%car%start_again:35 %car%wrong_one:32 %car_part%do_it:50 %car_part%fails:-51 %car_part%how_long:31 %car_part%leak:-20
%car_part%leave_me:-29 %car_part%lift:23 %car_part%meaning:-20 %car_part%message:-26 %car_part%noise:-27
%car_part%odometer:-30 %car_part%opening:21 %car_part%phone:38 %car_part%place:-20 %car_part%question:-48
%car_part%refuse:77 %car_part%shift_it:23 %car_part%smoke_smell:-20 %car_part%staff:118 %car_part%start_again:26
%car_part%thanks:70 %car_part%who:35 %car_part%wrong_one:52 %do_it:-41 %do_it%elsewhere:-82 %do_it%gone_car:-44
%do_it%how_long:48 %do_it%lift:21 %do_it%meaning:26 %do_it%message:-56 %do_it%money:39 %do_it%opening:20
%do_it%pay_day:-18 %do_it%refuse:140 %do_it%season:-31 %do_it%shift_it:-39 %do_it%staff:-21 %do_it%thanks:37
%do_it%who:25 %doubt%gone_car:46 %doubt%how_long:58 %doubt%message:-63 %doubt%money:74 %doubt%on_way:29
%doubt%question:22 %doubt%shift_it:50 %elsewhere%message:45 %elsewhere%money:101 %elsewhere%question:109
%elsewhere%refuse:-87 %elsewhere%season:-34 %elsewhere%shift_it:54 %elsewhere%start_again:-28
%elsewhere%wrong_one:-45 %fails:-96 %fails%how_long:-30 %fails%leave_me:-27 %fails%message:-33 %fails%refuse:80
%fails%staff:-29 %fails%wrong_one:-33 %family:-32 %family%gone_car:-25 %family%money:55 %family%shift_it:-28
%gone_car:-80 %gone_car%lift:18 %gone_car%message:-22 %gone_car%on_way:22 %gone_car%question:65 %gone_car%shift_it:18
%gone_car%thanks:23 %gone_car%wrong_one:57 %how_long:41 %how_long%on_way:58 %how_long%opening:33 %how_long%phone:26
%how_long%question:-47 %how_long%refuse:36 %how_long%wrong_one:41 %leave_me:-38 %leave_me%message:-39
%leave_me%on_way:48 %leave_me%pay_day:75 %leave_me%question:29 %leave_me%season:68 %leave_me%start_again:-28 %lift:46
%lift%money:23 %lift%odometer:27 %lift%on_way:-24 %lift%opening:68 %lift%pay_day:35 %lift%question:-39 %machine:36
%machine%message:22 %machine%refuse:39 %meaning:-122 %meaning%money:31 %meaning%on_way:67 %meaning%phone:-56
%meaning%question:-36 %meaning%refuse:-71 %message:85 %message%money:-23 %message%on_way:184 %message%pay_day:58
%message%phone:-52 %message%refuse:-97 %message%season:64 %message%shift_it:70 %message%start_again:-201
%message%thanks:-23 %message%who:-33 %message%wrong_one:-49 %money:152 %money%odometer:122 %money%on_way:-41
%money%pay_day:94 %money%phone:38 %money%question:19 %money%refuse:-41 %money%shift_it:91 %money%staff:29
%money%start_again:49 %money%thanks:100 %money%wrong_one:66 %noise:-73 %noise%question:-19 %noise%refuse:55
%odometer:58 %odometer%pay_day:45 %odometer%phone:-34 %odometer%question:-29 %odometer%refuse:61
%odometer%shift_it:-24 %odometer%staff:-21 %odometer%start_again:42 %on_way%opening:37 %on_way%phone:41
%on_way%question:37 %on_way%refuse:-49 %on_way%smoke_smell:-18 %on_way%staff:25 %on_way%who:21 %opening:-18
%opening%question:-50 %opening%refuse:18 %opening%wrong_one:20 %pay_day:-19 %pay_day%phone:26 %pay_day%question:-18
%pay_day%shift_it:-31 %phone:-31 %phone%question:-75 %phone%refuse:41 %phone%shift_it:-35 %phone%start_again:53
%phone%who:55 %place:-88 %place%question:-22 %place%staff:-21 %place%wrong_one:69 %question:-37 %question%refuse:-21
%question%shift_it:84 %question%start_again:-62 %question%thanks:21 %question%who:-84 %question%wrong_one:28
%refuse%season:23 %refuse%shift_it:-42 %refuse%staff:125 %refuse%start_again:79 %refuse%thanks:48 %refuse%who:-38
%season:-27 %season%shift_it:-46 %season%thanks:24 %shake:-86 %shift_it:-36 %shift_it%start_again:-36
%shift_it%thanks:23 %shift_it%wrong_one:-22 %smoke_smell:-76 %staff:46 %staff%thanks:-45 %start_again:-92
%start_again%who:51 %start_again%wrong_one:51 %thanks:-18 %who:-68 %wrong_one:-29 @?:-183 @after_visit:196
@after_visit_cant_complain:-38 @car:-71 @confirm:-82 @day:-106 @later:-48 @nothing:28 @offers:-144 @reading:-46
@time:-122 @walk_in:-43 ^_$:-21 ^_a:-83 ^_al:-23 ^_all:-31 ^_and:-19 ^_any:-34 ^_are:-39 ^_been:29 ^_better:-21
^_brakes:-32 ^_cada:28 ^_call:-30 ^_can:-105 ^_cancel:21 ^_cant:-59 ^_car:-41 ^_como:-51 ^_cost:-23 ^_could:-32
^_couldnt:21 ^_cuando:-22 ^_cuanto:-79 ^_de:-82 ^_dejeme:-18 ^_did:-35 ^_do:-69 ^_enough:-50 ^_es:22 ^_esta:-40
^_estoy:22 ^_every:27 ^_everything:-47 ^_fine:-22 ^_gracias:22 ^_great:70 ^_hey:-27 ^_hm:-21 ^_how:-62 ^_i:39
^_ill:-18 ^_im:-32 ^_in:-18 ^_is:-125 ^_it:-53 ^_just:-23 ^_la:65 ^_last:63 ^_le:18 ^_let:-41 ^_lo:-33 ^_lol:19
^_mejor:-18 ^_mil:22 ^_my:-79 ^_no:30 ^_nobody:28 ^_not:30 ^_nunca:88 ^_oh:88 ^_oil:-34 ^_ok:-21 ^_one:81 ^_only:-20
^_otro:80 ^_please:34 ^_por:28 ^_prefiero:-25 ^_pues:58 ^_puro:40 ^_quede:78 ^_quedo:-37 ^_quiero:20 ^_sale:-19
^_scratch:-18 ^_se:-33 ^_si:-65 ^_siempre:69 ^_son:74 ^_still:62 ^_text:-37 ^_thank:-24 ^_thanks:54 ^_that:-19
^_the:151 ^_this:124 ^_todo:-96 ^_too:-33 ^_took:29 ^_ustedes:33 ^_uy:28 ^_when:-19 ^_why:85 ^_wow:46 ^_y:-43
^_ya:-106 ^_yep:-33 ^_yes:-73 ^_yo:-26 ^_you:119 ^_your:120 a:64 a_$:-44 a__car:24 a__for:-23 a__is:61 a__off:118
a__time:-24 a_good:-28 a_la:-18 a_mechanic:-19 a_month:54 a_price:-18 a_que:-28 a_rip:116 a_ver:21 a_week:80
about_the:27 after:42 after_$:-22 after_you:30 again:21 agua:-18 ahi:-33 ahi_$:-35 ahorita:-18 al:-81 al_cien:-28
algo:62 all_$:-46 all__my:32 all_day:35 all_good:-30 all_i:21 all_over:37 already_$:-19 always:41 am:-36 and:152
and__dont:-31 and__has:19 and__it:-18 and__like:21 and__you:-20 and_did:20 and_im:19 and_it:44 and_nobody:66
and_the:23 and_what:-19 and_you:44 ando:-26 annoying:81 another_bill:28 answer:26 antes:22 antes_$:47 any:-67
anymore:-19 appointment:-26 appointment_$:-21 appreciate_it:24 are:-87 are_your:-18 arreglaron:26 as:-64 as_well:-38
asi:21 ask_me:-25 asked:38 asked_for:37 asking:20 at_$:-34 at__counter:51 at__the:58 at_all:-26 at_and:-23 at_the:-21
at_work:20 at_your:28 atencion:55 aviso:-19 baby:18 back:53 back_$:56 back__for:25 back_on:26 bad:-141 bad_$:-117
bank:-32 be:-42 bebe:18 before:-23 being:95 best:-42 best_$:-41 better:-18 bien:48 bien_el:31 bien_gracias:-18
bill:140 bill_$:40 bill_was:44 bonito:31 brake:-22 brakes:-47 brakes_feel:-29 broke:-45 bucks:40 bumper:19 but:-96
but_the:-32 by:-58 by_the:-44 cada:23 call:-65 call_$:-20 call_me:-50 called:62 called__back:53 called_me:53 came:39
came_on:21 can:-172 can__me:-28 can__send:-18 can_i:-33 can_you:-81 cancelen:18 cant:-74 cant_complain:-43 cap:31
car:81 cara:52 card:28 caro:-30 carro_$:23 changed__mind:-20 changed_my:19 changing:70 charge:-47 charge_for:-28
charged:72 charged__for:21 charged_me:33 check:-31 chiste:21 cien:-29 cien_$:-27 cita:-21 close:-25 cobran:-19
cobran_$:28 cobran_por:-37 cobraron:70 cobraron__mas:22 cobraron_de:22 cobro:26 come:78 come_back:30 come_in:37
complain:-43 complain_$:-38 complaints:-57 con:113 con__que:19 con__trabajo:19 con__y:23 con_el:41 con_la:23
con_lo:20 con_los:-23 con_un:28 con_ustedes:49 contact:-19 contento:20 cost:-42 could:-41 could_you:-55 couldnt:30
couldnt_be:26 counter:56 cuando:-21 cuanto:-100 cuanto__el:-27 cuanto_me:-29 cuenta:28 da:-72 dar:-18 day:-28
day_$:-38 de_$:-20 de__es:18 de__llanta:39 de__lo:18 de__manana:19 de__no:-24 de_dinero:-23 de_la:35 de_las:-31
de_mas:39 de_que:-41 de_regreso:34 dealer:-26 dejaron:50 dejeme:-18 desde:45 desde_que:42 desk:38 despues:-19
dia_$:24 dias:18 did:-51 did_my:27 did_that:-36 did_you:-41 didnt:112 dieron:21 dijeron:25 dinero:28 dios:-23 do:-147
do__charge:-25 do__have:-20 do__keep:65 do_i:-27 do_my:-26 do_not:-19 do_you:-22 doble:22 donde:-29 done:-36
dont__me:71 dont__you:73 dont__your:-59 dont_have:-25 dont_know:-30 dont_text:63 door:31 dos:104 dos_veces:85
drive:-44 drive_$:-20 drives:-18 drives_like:-18 duro:39 early:46 early_$:54 el:72 el__no:23 el__y:38 el_carro:43
el_dia:49 el_gerente:20 el_numero:-41 el_otro:-28 el_telefono:54 el_trabajo:67 en:-23 en__noche:50 en__taller:-31
en_el:-21 en_otro:-33 enough_$:51 era:27 es:-27 es_$:-30 es__mismo:28 es_lo:24 es_un:45 escriban_$:-29 escriben:45
escriben_$:-19 ese:-88 ese_servicio:-37 eso:-34 esperando:40 espere:38 esta:-127 esta_$:-40 esta_muy:-29 estan:-18
esto_$:-23 estuvo:23 even:25 ever:25 every:43 every__i:47 every_time:37 everything:-57 everything_was:-38 falta:19
far:-35 favor:-53 favor_$:-42 feel:50 feel_like:19 feo:21 fine:-23 fine_$:-32 first_$:-23 five:22 fix:21 fix_it:19
fixed:48 for:89 for__i:32 for__me:-20 for__oil:20 for_a:20 for_me:-71 for_nothing:102 for_that:36 for_the:18
for_this:-21 for_what:20 forever:78 forgot:56 forgot_to:60 four:31 freno:-28 friday_and:19 from_you:-22 front:22
front_desk:43 fue__que:-25 fue_lo:-25 fui:49 garage:-19 gave:27 gerente:19 get:-65 get_a:-19 get_it:18 get_my:-32
getting:63 give:-40 give__a:-19 give_me:-33 going:20 going_to:-40 gone:27 good:-87 good_$:-30 got__wrong:-33
got_a:-26 got_my:30 got_the:-30 gracias_$:-47 gracias_por:71 grease:43 grease__over:39 grease_all:39 great:33
great_$:-37 great__bill:28 great__you:20 great_another:28 guess:-21 gusto:85 guy_$:-33 guys:-39 guys_$:29 guys_do:-21
hablar:-45 hablar_con:-39 hableme:-21 hace:-20 had:55 had_to:31 happy:66 happy_$:-20 has:43 hasta:-36 hasta_que:-19
hate:24 have__wrong:-26 have_a:-18 have_never:-21 have_no:35 hay:-32 he:-51 here:-23 here_$:-33 hey:-27 high:-24
hizo:-23 hm:-21 hood:34 hood_$:19 horas:75 horas_$:40 hours:48 how__was:42 how_bad:-20 how_i:50 how_many:-24
how_much:-28 hoy:22 hundred:28 husband:-19 i:106 i__drive:-19 i__for:18 i__had:20 i__know:-23 i__my:-72 i__never:-39
i__so:-25 i__the:-25 i__with:20 i__you:22 i_came:25 i_come:47 i_do:-30 i_dont:19 i_feel:58 i_get:-47 i_got:37
i_guess:-21 i_have:19 i_left:47 i_live:-32 i_need:-35 i_paid:42 i_think:-33 i_want:26 i_was:149 i_will:-19 idea:-33
if_you:18 igual:47 igual_$:43 ill:-33 im:39 im__of:49 im__work:40 im_at:47 im_not:-20 in:24 in_$:-38 in__and:42
in__car:37 in__is:44 in__morning:75 in_a:-32 in_another:-33 in_it:67 in_june:-36 in_my:36 in_the:62 instead_$:-18
interesa:-24 invoice:32 is_$:-51 is__a:-88 is__i:20 is__new:49 is_a:30 is_getting:61 is_it:-46 is_my:-19
is_something:46 is_that:-26 is_the:21 is_there:-31 is_this:-46 is_tight:-30 is_wrong:23 is_your:-28 it_$:-20
it__a:-21 it__in:26 it__not:25 it__ok:-38 it__to:-23 it_back:-27 it_in:-23 it_is:84 it_still:55 jaja:-29 job:-27
june:-37 june_$:-40 just:42 keep:46 keep__me:58 keep_texting:57 keys:32 keys_$:18 know:-45 know_$:-22 know_you:-33
la:86 la__es:22 la__no:19 la__pasada:23 la__que:-24 la__vez:97 la_atencion:40 la_cara:50 la_cita:-18 la_cuenta:24
la_lista:-18 la_llamada:-21 la_llanta:26 la_noche:57 la_otra:59 la_tarde:-23 la_ultima:26 la_verdad:18 las:-46
las_$:-18 las__la:26 las_de:27 las_llantas:-26 last:108 last__and:43 last__you:35 last_month:-27 last_night:-40
last_time:184 last_week:-61 late_$:-40 later:-38 later_$:-21 le:-117 le__a:21 le_hicieron:-54 left:146 left_$:-21
left_a:75 les:22 let:-52 let_me:-35 light_$:23 light__on:22 line:-18 list:-33 list_$:-27 lista:-20 live:-34
live_in:-31 llamada:-27 llamada_$:-33 llanta_$:24 llantas_$:-23 lo:-73 lo__a:-27 lo__con:39 lo__el:-23 lo__en:-19
lo__me:19 lo_hicieron:-47 lo_hizo:-20 lo_mismo:19 lo_que:32 locked:18 lol:-46 lol_$:-18 looking:-18 loose:35
loose_$:41 los:-112 los_mensajes:-60 lost:26 lost_my:39 lot:60 lugar:-19 luz:-18 made:22 makes:38 makes_the:48
mal_$:-58 mal_el:-29 mall:-31 malo:-38 manana_$:-24 mandan:23 manden:-30 manden_nada:-29 many:99 many_texts:126
mas:54 mas_$:19 mas__menos:22 mas_mensajes:-26 mas_o:22 mas_que:34 may:-18 me:131 me_$:-78 me__algo:68 me__como:37
me__el:38 me__en:42 me__esperar:31 me__hicieron:-41 me__im:32 me__in:33 me__june:-34 me__la:44 me__las:-18 me__mal:42
me__mas:-54 me__mensajes:43 me__my:-21 me__nada:48 me__una:26 me__your:-18 me_about:-32 me_again:-69 me_and:-26
me_at:25 me_back:30 me_cobraron:66 me_da:-63 me_dejaron:51 me_escriban:29 me_escriben:45 me_for:47 me_hicieron:66
me_in:-60 me_interesa:-23 me_la:-33 me_llame:-19 me_lo:-43 me_manden:-24 me_off:-64 me_paguen:-18 me_please:-18
me_pueden:-23 me_quede:-21 me_rayaron:18 me_robaron:-22 me_salio:66 me_so:104 me_tienen:19 me_today:26 me_trataron:28
me_up:-21 me_urge:-39 meant:-22 mecanico_$:-18 meh:46 mejor:-40 menos:20 mensaje:97 mensaje_$:38 mensajes_$:-39 mi:80
mi__de:43 mi_carro:23 mi_telefono:-24 mind:-29 minutos:19 mis:21 mismo:24 mismo_dia:-18 molesto:29 monday:-24
money:57 money_$:35 money__tight:-32 money_is:-31 month:25 month_$:-35 month_is:75 more:104 more_$:-25 more_texts:-30
morning:36 morning_$:64 much_$:26 must_have:-22 muy:92 muy_caro:-21 my:167 my__back:62 my__has:27 my__in:26
my__is:-32 my__refund:-57 my_car:149 my_hood:20 my_mind:-25 my_name:-19 my_oil:45 my_seat:44 my_tax:-59 my_tires:22
nada:93 nada_$:105 nadie:126 nadie_me:50 name:-30 necesito:-42 need:-86 need_a:-18 need_to:-30 needed:31 needed_$:-23
never:18 never__me:22 never__to:-19 never_been:-29 new_$:22 next:-36 ni:60 ni_me:41 nine:19 no:27 no_$:-20 no__a:-18
no__at:-35 no__bien:74 no__con:19 no__de:-25 no__en:55 no__escriban:44 no__here:-28 no__manden:-18 no__mensajes:-28
no__nada:38 no__puedo:-22 no__texts:-31 no_complaints:-57 no_es:-34 no_it:66 no_me:57 no_more:-52 no_one:35
no_quedo:77 no_quiero:-25 no_se:46 no_soy:-30 no_tengo:-31 no_y:26 no_you:66 nobody:131 noche:50 noche_$:59
noise_$:44 nomas:34 not:82 not__car:-46 not__it:32 not__me:-30 not__now:-21 not__the:-20 not__this:-20 not__to:-19
not_a:-36 not_for:-22 not_going:70 not_happy:110 not_my:-56 not_really:59 not_the:-24 not_today:-30 nothing:73
nothing_$:113 now:-117 now_$:-46 nuevo:48 nuevo_$:52 number:-32 number_$:-28 numero:-56 numero_$:-45 nunca:85
nuts:-20 o_menos:22 of:124 of_my:20 of_the:-29 off:78 off_$:138 oh:85 oh__another:44 oh_great:28 oil:46 oil_$:24
oil_light:27 ok_but:-35 old:-30 on:-30 on_$:-29 on__way:-20 on_my:20 once:20 one:71 one_$:-18 only:-34 only__me:-18
open:-33 or:-42 other:-21 otro:34 otro_taller:-45 out:-22 out_$:-21 out__my:39 out__the:-19 out_of:30 over_my:27
overcharged:29 pague:27 paguen:-18 paid:24 para:-62 para_el:-20 para_que:-21 part:24 pasada:23 pasar:-30 paso:-20
pay_for:32 paying:-35 pedal:-28 people:102 pero:-40 persona:-27 persona_$:-19 pesimo:55 picked:20 pieza:25
please_$:-35 plug:44 poner:67 por:27 por__el:30 por__me:63 por__no:-66 por_donde:-19 por_favor:-49 por_la:-19
por_nada:69 por_que:36 precio:-56 precio_$:-23 prefiero:-30 preguntar:20 price_$:-19 promised:34 puede:-24 pueden:-37
puedo:-49 pues:80 pulls:-26 punto:20 puro:23 put:44 put_me:-19 put_the:36 que:112 que_$:-35 que__con:55 que__de:110
que__ese:-30 que__hicieron:-21 que__lo:-29 que__mal:-50 que__me:21 que__no:19 que_es:-50 que_fue:-20 que_le:-54
que_me:-29 que_no:-24 que_precio:-19 que_tan:-67 que_tanto:37 quede:111 quede_muy:80 quedo:20 quedo_$:19 queja:18
quick:-27 quien:-25 quienes:-26 quienes_son:-26 quieren:90 quiero__de:-28 quiero__me:-28 quiero_nada:-21
quiero_que:-29 quote:22 quote_$:61 radio:28 rayaron:18 ready:-18 really:87 really_$:84 recibir:-21 regreso:46
remember:-18 repair:56 respeto:35 right:32 right_after:29 right_now:-28 ring:19 rip:116 robaron:-52 robo:31 rock:-54
rude:47 said:80 sale:-53 sali:18 salio:69 salir:-31 same:52 schedule:-42 scratched:23 scratched_my:23 se:-43
se_me:-47 seat:45 seat_$:37 see:-51 see_you:-18 sell:42 send:-40 send_me:-24 senor:-21 sent:20 ser:21 service:24
set:-22 shakes:-26 shop_$:-31 shop_is:32 si:-65 si__bien:-19 sick:94 siempre:70 sign:-23 sign_me:-18 sigo:21 sigue:65
sin:25 since:31 six:20 slow:27 so:86 so_$:-27 something:33 son:74 soon:-25 sorry:-20 soy:-61 soy__persona:-20
state:-23 still:115 still__about:43 still__on:55 stop:-36 stop_$:-23 stop__me:18 stuff:74 stuff_$:45 sure:-23
take__off:-48 take_me:-48 talk:-18 taller:25 taller_$:45 tan__esta:-45 tan_mal:-21 tan_malo:-30 tanto:97 tax:-72
tax_refund:-60 tech:36 telefono:35 telefono_$:27 tell:-42 tell_me:-34 temprano:31 temprano_$:39 tengo:-24 terrible:28
text:149 text__about:-21 text__again:-48 texting_$:-18 texting_me:61 th:-43 th_$:-26 than:56 thank:-68 thank_you:-68
thanks_$:-38 thanks__nothing:102 thanks__the:-18 thanks_for:56 that_$:-62 that__text:27 that__the:24 that_last:-24
the:22 the__and:-27 the__car:18 the__guy:-37 the__last:-30 the__light:24 the__like:18 the__of:-20 the__you:63
the_best:-39 the_bill:28 the_car:-44 the_dealer:-20 the_guy:23 the_keys:25 the_last:37 the_light:-31 the_mall:-31
the_morning:75 the_noise:22 the_oil:23 the_other:-19 the_phone:24 the_price:46 the_quote:54 the_texts:-59 the_th:-41
the_work:51 then:-27 then_$:-24 there_$:18 there__a:33 there_a:-29 there_with:22 thing:-21 thing_to:32 think:-24
think_you:-19 third:67 this__me:-25 this__the:51 this_a:-39 this_is:150 those:-25 three:47 through:59 through_$:-20
thursday:-26 tight:-31 tight_$:-24 til:-26 till:-45 till_the:-19 time:84 time__you:-25 time_i:43 time_you:23 times:78
tire:-30 tire_$:-19 tmrw:-19 to__for:22 to__me:44 to__my:42 to__shop:-22 to_come:24 to_sell:43 to_text:-29 to_the:-22
to_you:-26 to_your:-23 todavia:28 todavia_no:-21 today:32 today_$:39 todo:-34 todo__dia:62 todo_bien:-37 todo_el:61
told:87 told_you:37 too:-58 too_$:-172 too__for:-29 too__texts:68 too_many:72 too_much:37 took:61 took__to:-23
took_it:-34 total:-18 trabajo:34 trabajo_no:46 traffic:-23 traffic_is:-22 traigo:-18 trataron:28 tres:20 trust:118
try:-19 tuve:58 tuve_que:58 twice:98 twice_$:33 two:37 ultima:25 ultima__me:26 ultima_vez:24 un:74 una:109 una__de:50
una__y:27 una_hora:21 under__hood:20 uno:47 unos:42 up_$:-23 urge:-39 used_to:24 ustedes:75 ustedes_$:55 uy:28
vale:23 vale_$:38 veces:117 vender:34 venia:19 ver:49 vez:70 vez_$:-21 vez_me:36 vez_que:22 vibrates:-29 viernes:-23
visit:66 visit_$:26 voy_a:-19 wait:-71 waited:39 waiting:22 want_my:23 want_to:-26 was:129 was__and:48 was__last:-41
wasnt:55 way:71 way_$:-29 way_too:101 we:-35 week_$:-33 weeks:-21 well:-24 well_$:-23 were:23 what:20 what__the:-43
what__you:-47 what__your:-41 what_a:142 what_are:-20 what_do:-22 what_i:80 what_is:-73 what_time:-28 what_was:-28
wheel:-29 wheel_is:-21 when:-22 while:30 who:-31 who_is:-34 whoever:22 why:73 why__you:103 why_do:66 why_not:-33
will:-80 will__be:-18 with:64 with_$:24 with__i:44 with__texts:-47 with_a:19 with_someone:-21 with_the:34
wonderful:59 work:66 work_$:77 works:-21 worse:51 worst:55 worth:-34 would:-51 wow:74 wrong:42 wrong_$:20
wrong_guy:-34 wrong_person:-18 wrote:34 y:159 y__la:19 y__lo:-23 y__me:66 y__se:21 y_cuanto:-21 y_me:32 y_nadie:39
y_ni:38 ya:-46 ya__hicieron:-26 ya__lo:-42 ya_le:-34 ya_me:-58 yep:-35 yes:-99 yes_$:-25 yes__the:-22 yes_but:-25
yesterday:31 yo_no:-22 you:196 you_$:-147 you__a:31 you__for:-19 you__have:-28 you__i:-19 you__it:26 you__me:80
you__my:139 you__texting:65 you__the:-43 you__to:55 you__today:-24 you_are:-22 you_can:-25 you_charge:-40
you_charged:25 you_close:-24 you_got:-45 you_guys:-30 you_had:41 you_have:-59 you_keep:72 you_left:91 you_never:49
you_open:-28 you_people:58 you_put:39 you_said:75 you_send:-20 you_take:36 you_tell:-22 you_text:78 you_there:-18
your:79 your__desk:45 your__for:-22 your__have:43 your_front:45 your_hours:-19
"""
