"""What speaks for and against `complaint`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "complaint"
BIAS = -162
WEIGHTS = """\
#aben:-26 #abia:72 #abla:-34 #ablo:26 #abus:143 #acan:77 #acar:77 #acce:73 #acia:-26 #acti:-44 #aded:-24 #ades:28
#adie:197 #adio:45 #ador:40 #ados:97 #affi:-37 #afte:67 #agai:22 #agar:-37 #ager:40 #agua:-37 #ague:23 #aigo:-24
#aile:-26 #aint:-116 #aite:66 #aken:-25 #akes:-24 #aler:-36 #algo:50 #algu:-35 #alin:41 #alio:97 #alir:-55 #alle:63
#alls:-31 #ally:89 #alta:29 #alwa:37 #amad:-24 #amag:22 #amar:44 #ambi:-22 #amen:-28 #amos:-23 #anag:44 #anda:-26
#ande:-54 #andi:31 #andl:-23 #ando:47 #ange:-37 #angi:91 #anic:-39 #anne:86 #anno:127 #anos:24 #answ:72 #anta:93
#apol:29 #appi:-25 #appo:34 #appy:95 #aqui:-29 #arag:-26 #aran:31 #arca:-79 #arda:64 #aret:30 #arge:51 #aria:-28
#arle:23 #arlo:-27 #arly:68 #arme:44 #aron:427 #arra:-30 #arro:31 #asad:27 #asar:-30 #asia:100 #asie:24 #aske:63
#asnt:56 #asse:-31 #asta:-60 #aste:-44 #asti:108 #asto:69 #atar:41 #ated:64 #aten:100 #ater:-27 #ates:-50 #athe:-22
#atic:-26 #atie:31 #atur:-23 #augh:22 #ause:66 #auto:-55 #avia:30 #ayin:-42 #baby:25 #back:77 #baja:-42 #band:-24
#bank:-54 #baro:-70 #bast:27 #bate:-30 #bcap:68 #beca:27 #befo:-25 #bein:125 #bend:-24 #best:-52 #bian:22 #bien:85
#bill:268 #blad:26 #blan:-32 #blar:-35 #bles:-26 #bloc:-23 #body:208 #bols:64 #boni:65 #brak:-92 #bran:-46 #brar:140
#brat:-31 #brok:-94 #buck:38 #bump:34 #busc:-30 #busi:133 #cada:64 #call:-39 #came:34 #cans:79 #cant:-112 #cara:79
#card:33 #care:36 #carl:42 #caro:-79 #caus:67 #ccep:54 #cell:-27 #cepc:57 #cept:50 #cesi:-63 #chan:31 #char:59
#chec:-49 #chev:-25 #choo:-28 #chos:56 #ciat:23 #cien:-47 #cier:-36 #ciga:41 #cion:82 #cios:37 #cita:-23 #cked:31
#cker:49 #cket:40 #clas:41 #clie:30 #clos:-30 #cobr:99 #code:-45 #cole:-23 #colg:28 #come:87 #comi:-27 #comp:-154
#conf:139 #cont:57 #conv:-23 #cord:30 #corr:-29 #cort:-34 #cost:-96 #coun:24 #crib:51 #croo:25 #ctiv:-51 #cual:-31
#cuan:-108 #cuen:54 #cuer:-23 #culo:35 #cupo:-28 #dama:22 #darm:-31 #daro:94 #davi:32 #deal:-27 #dece:28 #deja:51
#deje:-33 #dema:96 #dent:-38 #derf:72 #desd:71 #desk:59 #deso:117 #devo:91 #dias:94 #dich:36 #dici:-25 #dicu:36
#didn:146 #dier:56 #diga:-35 #dije:145 #dine:33 #ding:39 #dios:-23 #dirt:52 #disa:72 #dobl:23 #does:32 #dont:-27
#door:42 #down:35 #dred:24 #driv:-98 #drov:33 #dule:-26 #duri:32 #duro:51 #eale:-33 #eall:108 #eant:-30 #earl:58
#ease:57 #easy:29 #eate:65 #eats:35 #ecal:-31 #ecau:27 #ecep:58 #eces:101 #echa:-39 #ecia:28 #edal:-33 #edan:-28
#edas:26 #eded:39 #eden:-44 #edes:63 #edul:-26 #eede:39 #eemb:66 #efie:-34 #efon:40 #efor:-25 #egan:37 #egla:25
#egre:77 #egun:44 #eing:127 #ejar:46 #ejas:-26 #ejem:-22 #ejor:-62 #elef:40 #elen:32 #emas:134 #embo:66 #emin:-27
#empr:103 #enca:-28 #enci:40 #enco:-57 #ende:40 #enes:-43 #engo:-51 #enia:25 #enla:43 #enos:61 #ensa:121 #ensi:-22
#enta:47 #enty:46 #eopl:119 #epai:79 #epci:57 #epta:54 #eran:58 #erch:24 #erco:-22 #erda:52 #erdi:34 #ered:48
#eren:96 #eres:-52 #erfu:72 #erie:48 #erio:84 #ermi:-28 #erne:-36 #eron:256 #eros:134 #erri:41 #erso:-55 #erta:25
#eryt:-77 #esar:73 #escr:55 #esda:-35 #esde:71 #eset:49 #esim:78 #esit:-68 #esor:113 #espe:152 #esse:119 #essi:30
#essu:24 #este:26 #estu:34 #etie:36 #etim:-22 #ette:30 #etti:74 #evad:-31 #even:49 #ever:120 #evis:-31 #evol:91
#ewhe:51 #expl:56 #exti:-23 #falt:64 #fast:34 #feel:66 #fell:-26 #fess:33 #ffic:-39 #fier:-42 #filt:48 #fine:-32
#five:53 #fixe:45 #fono:42 #fore:77 #forg:76 #form:106 #four:82 #fren:-44 #frid:-22 #from:-25 #fter:67 #fund:-32
#furi:39 #gain:22 #game:-39 #gara:-31 #gare:26 #garo:32 #garr:-25 #gast:43 #gave:29 #genc:-23 #gent:26 #gett:84
#ghed:28 #ghwa:22 #ging:111 #give:-37 #goin:22 #gone:33 #good:-96 #grea:103 #gres:78 #gros:105 #gual:42 #gues:-34
#guie:-28 #guna:-29 #gunt:50 #gust:67 #guys:-49 #habi:72 #habl:-36 #hace:-47 #hang:51 #hani:-26 #hank:-81 #happ:66
#harg:66 #hast:-59 #hear:-30 #heat:-28 #heck:-41 #hedu:-26 #heve:-25 #high:29 #hile:27 #hink:-24 #hird:95 #hizo:-23
#hock:46 #hoev:32 #hold:24 #hone:30 #hood:31 #hool:-25 #hora:136 #hori:-32 #hose:-24 #hour:78 #hous:-26 #hree:89
#hrou:58 #hubc:68 #huma:-28 #hund:23 #hung:34 #hurs:-41 #husb:-22 #hway:22 #iado:97 #iate:23 #iben:56 #ibir:-37
#ible:25 #ibra:-35 #icey:-32 #icho:35 #icio:-56 #icul:35 #idad:40 #iday:-31 #idea:-40 #idic:36 #idio:23 #idnt:146
#iemp:68 #ienc:29 #iend:23 #iene:-39 #ierc:-22 #iere:95 #iern:-35 #iero:127 #ierr:-28 #ieza:39 #igar:41 #ight:29
#ighw:22 #igua:40 #igue:99 #ijer:64 #iles:-25 #ille:25 #ills:64 #ilte:23 #imes:106 #incl:-26 #inco:91 #inea:40
#ined:38 #iner:39 #infl:25 #ingu:-23 #inst:-36 #intm:-30 #ints:-62 #inut:56 #invo:43 #iona:29 #ione:-33 #ious:95
#ippe:142 #ires:-23 #isan:31 #isap:74 #ised:67 #isio:-22 #isit:137 #ismo:55 #ista:-41 #iste:41 #isto:-26 #ited:58
#itin:27 #iven:-33 #ives:-35 #ixed:38 #izad:23 #jaja:-49 #jaro:81 #jeme:-22 #jero:49 #junt:-33 #just:37 #keep:43
#kept:116 #keys:34 #kind:-40 #king:-47 #know:-53 #lado:36 #lain:-97 #lanc:-27 #laro:42 #lars:22 #lase:28 #last:96
#ldnt:51 #lear:23 #lefo:40 #left:178 #lega:45 #lego:-22 #lema:33 #leme:-27 #lest:58 #leva:-27 #levo:31 #lied:46
#lien:28 #ligh:-26 #line:30 #list:-59 #live:-48 #lked:23 #llas:-25 #lled:116 #lleg:36 #llin:23 #look:-44 #loos:52
#lopp:27 #lost:23 #lous:36 #ltim:41 #lune:-23 #lvie:77 #lway:37 #mada:-34 #made:31 #make:50 #mala:62 #mall:-36
#malo:-57 #mana:41 #mand:-68 #mani:48 #mann:86 #many:125 #marc:-74 #masi:100 #mate:-27 #mber:-45 #mbol:64 #mean:-26
#mech:-26 #mejo:-62 #meno:27 #mens:111 #ment:-89 #mero:-82 #mess:36 #meti:23 #mewh:31 #mier:-22 #mind:-41 #mine:-30
#minu:48 #mise:59 #mism:46 #mist:-29 #mole:58 #mond:-26 #mone:83 #moot:-27 #more:97 #morn:24 #most:24 #moth:30
#mper:24 #mpla:-132 #mple:30 #mpra:28 #mpre:175 #much:93 #nada:133 #nadi:187 #nage:39 #nail:-26 #name:-51 #naro:55
#ncio:58 #nclu:-24 #ncon:38 #ndan:44 #ndar:-29 #nday:-30 #nden:-58 #nder:101 #ndre:24 #nece:-64 #neci:22 #need:-92
#nero:47 #ners:86 #nest:27 #next:-47 #nfla:25 #nfor:91 #nfun:-36 #ngan:38 #ngin:98 #ngun:-22 #nigh:51 #nine:26
#nish:-23 #nito:37 #nner:95 #nnoy:128 #nobo:214 #noch:49 #noma:37 #none:28 #noth:118 #noyi:105 #nsaj:103 #nsan:39
#nswe:72 #ntac:-44 #ntad:27 #ntan:29 #ntar:35 #ntas:33 #nted:76 #nter:23 #ntes:147 #ntis:-23 #ntme:-30 #ntra:-82
#ntre:22 #nuev:27 #numb:-36 #nume:-62 #nunc:100 #nute:34 #nuts:-22 #nvoi:44 #obar:-41 #oble:43 #obod:214 #obra:63
#obro:29 #oche:46 #ocke:102 #ocup:-23 #odav:32 #oday:36 #oeve:27 #ofes:33 #ofte:47 #oice:50 #oint:45 #ojal:29
#oles:42 #olog:29 #olso:66 #olvi:76 #omas:33 #omat:-25 #omew:28 #omis:60 #ompl:-124 #onal:30 #onde:60 #oned:39
#oner:72 #oney:47 #onfi:82 #onfo:96 #onfu:-38 #onga:37 #onit:58 #only:-43 #onta:-46 #onte:171 #ontr:-68 #oose:49
#ooth:-27 #open:-65 #ople:124 #oppy:27 #oras:95 #orda:27 #orde:77 #orev:101 #orgo:64 #orit:-31 #orks:-22 #orme:93
#orni:27 #orqu:32 #orra:-22 #orry:-30 #orse:89 #orst:58 #orth:-39 #oser:91 #osto:-33 #ostr:34 #otal:-26 #othe:23
#othi:98 #otro:27 #ould:-68 #ours:46 #ourt:25 #ousl:68 #ouve:46 #over:55 #owns:31 #oyin:105 #pagu:27 #paid:26
#pair:81 #para:-59 #pasa:-38 #pass:-42 #payi:-36 #pcio:52 #peda:-34 #pedi:22 #pens:-55 #peop:119 #peor:137 #pera:78
#perd:58 #peri:33 #perm:-25 #pers:-62 #pesi:78 #pete:30 #peto:48 #piez:39 #ping:-41 #plai:-94 #plen:49 #plie:23
#plug:54 #poca:49 #poin:39 #poke:32 #polo:29 #pone:78 #pong:32 #porq:48 #pped:112 #ppie:-25 #ppoi:34 #ppre:23
#pran:32 #prec:-24 #pref:-31 #preg:50 #pren:-50 #pres:134 #pret:35 #pric:-44 #prin:27 #prof:33 #prom:80 #pued:-142
#pues:100 #pull:-32 #puro:92 #push:30 #qued:119 #quej:-48 #quer:26 #quic:-36 #quin:-26 #quot:40 #raba:23 #rade:-28
#radi:43 #rado:52 #raff:-36 #rain:48 #rake:-91 #rand:79 #rano:26 #raro:88 #rata:61 #rato:41 #raya:32 #rcar:-52
#rcol:-22 #rdar:87 #rdat:24 #rday:26 #rden:73 #rder:22 #rdie:52 #real:144 #reas:73 #reat:131 #reca:-34 #rece:23
#reem:65 #refi:-34 #rega:27 #regl:25 #regr:77 #regu:55 #remi:-27 #remo:-23 #rend:-51 #reno:-31 #rent:27 #repa:79
#rero:52 #resa:24 #rese:25 #reso:55 #resp:68 #ress:133 #rest:-34 #rett:47 #reve:87 #rful:72 #rgan:22 #rged:116
#rgot:64 #rian:22 #ribe:54 #ribl:45 #rice:-29 #ridi:35 #righ:27 #ring:23 #rint:30 #rios:38 #riou:73 #ripp:136
#rite:57 #rive:-95 #rmis:-29 #rned:24 #rnes:-32 #rnin:22 #roba:-37 #robo:26 #rock:-64 #rofe:33 #roke:-95 #romi:60
#rong:67 #rook:25 #rose:94 #rote:42 #roug:51 #rove:31 #rque:34 #rrad:22 #rreg:28 #rrib:44 #rrie:-34 #rson:-55
#rted:-24 #rtie:40 #rude:75 #ruid:-30 #ruin:35 #runs:-29 #rust:129 #ryin:64 #ryth:-77 #sabe:-23 #saca:161 #sada:27
#said:85 #saje:103 #sale:-59 #salg:-31 #sali:51 #same:82 #sapp:74 #saro:56 #save:-22 #sban:-22 #scam:-34 #sche:-26
#scho:-25 #scon:26 #scri:43 #scue:-22 #sday:-53 #seat:95 #sell:56 #send:-44 #sent:61 #seri:90 #sero:68 #shak:-22
#shoc:46 #siad:100 #sick:116 #siem:78 #sien:23 #sign:-42 #sigu:85 #sill:25 #simo:75 #sinc:36 #sing:29 #sito:-56
#sits:55 #sked:65 #slop:27 #smoo:-27 #sold:70 #some:31 #sona:-39 #soon:-31 #sorr:-28 #spec:-27 #sper:94 #spet:53
#spok:32 #sque:-26 #ssed:103 #sses:-25 #ssur:24 #stab:34 #stak:-27 #stat:-28 #sted:35 #sten:24 #ster:59 #stic:82
#stil:111 #stop:-88 #stos:-22 #stra:33 #stri:51 #stuf:78 #stuv:36 #sues:-29 #sure:-27 #swap:-28 #swer:72 #taba:39
#tabl:41 #tact:-34 #take:-49 #tand:22 #tant:121 #tape:26 #tard:43 #tarm:24 #taro:49 #tart:-39 #tate:-38 #tche:44
#tech:42 #tede:63 #tele:30 #tell:-56 #tenc:77 #tend:30 #teng:-70 #tent:24 #terd:39 #tere:-41 #tero:61 #terr:41
#test:135 #teve:-30 #text:144 #that:30 #then:-35 #ther:31 #they:39 #thir:99 #thos:-31 #thou:-23 #thre:85 #thro:51
#thur:-41 #tien:44 #tier:90 #tigh:-29 #till:65 #time:166 #ting:92 #tire:-50 #tive:-35 #tmen:-30 #toda:90 #todo:-58
#told:137 #toma:-30 #took:96 #tota:-26 #traf:-40 #trar:-58 #tras:-48 #trat:103 #trea:93 #tres:66 #trip:45 #trus:130
#tter:-29 #ttin:69 #tues:-32 #tuff:79 #tuve:64 #tuvo:22 #twic:153 #uant:-93 #ubca:68 #ucho:74 #ucks:36 #ueda:-28
#uede:61 #uedo:-55 #ueja:-47 #uelv:26 #uena:-29 #ueno:27 #uent:48 #uerd:-23 #ueri:31 #uess:-30 #ueva:-22 #ueve:-25
#uevo:52 #ught:-28 #uick:-36 #uido:-26 #uien:-43 #uier:30 #uldn:51 #ulou:36 #ulpa:32 #ulti:38 #uman:-28 #umbe:-38
#umer:-47 #umpe:40 #unca:98 #undr:24 #unes:-23 #unos:42 #unta:52 #unte:55 #unto:-22 #uote:40 #upse:43 #ured:22
#urge:-44 #urin:31 #urne:24 #usba:-22 #usca:-28 #ushy:31 #usin:-22 #usly:68 #usta:-27 #uste:56 #usto:94 #utes:37
#utom:-24 #vado:-27 #vece:168 #vend:47 #veni:25 #vent:-31 #verc:24 #vibr:-34 #vici:-34 #vier:63 #visa:41 #visi:120
#viso:-33 #voic:51 #volv:96 #vuel:34 #want:-30 #wapp:-23 #wasn:61 #ways:35 #well:-26 #were:56 #when:-57 #wher:35
#whil:27 #whoe:32 #wice:153 #will:-108 #wipe:28 #with:47 #woke:28 #wond:68 #work:57 #wors:137 #wort:-35 #woul:-33
#writ:53 #wron:67 #wrot:40 #xpla:40 #xted:35 #yest:39 #ying:114 #your:108 #youv:46 #ythi:-79 %again_later%agree:59
%again_later%away:-108 %again_later%bad:121 %again_later%bring:64 %again_later%busy:-78 %again_later%car_part:90
%again_later%do_it:58 %again_later%doubt:28 %again_later%elsewhere:33 %again_later%family:-35
%again_later%gone_car:35 %again_later%leave_me:-34 %again_later%machine:32 %again_later%money:67
%again_later%on_way:-50 %again_later%opening:47 %again_later%phone:52 %again_later%refuse:93 %again_later%season:-27
%again_later%shift_it:24 %again_later%staff:33 %again_later%start_again:27 %again_later%thanks:50 %again_later%who:69
%again_later%wrong_one:136 %agree:-177 %agree%away:59 %agree%bad:122 %agree%bring:31 %agree%busy:-51
%agree%call_off:37 %agree%car_part:-57 %agree%do_it:-29 %agree%doubt:-66 %agree%elsewhere:24 %agree%fails:26
%agree%how_long:39 %agree%leave_me:57 %agree%message:78 %agree%money:34 %agree%noise:-31 %agree%on_way:93
%agree%opening:42 %agree%phone:-52 %agree%question:100 %agree%refuse:169 %agree%staff:-43 %agree%start_again:-42
%agree%thanks:-73 %away%bad:-53 %away%call_off:-24 %away%question:-61 %away%refuse:-41 %bad:472 %bad%bring:-25
%bad%busy:34 %bad%call_off:-65 %bad%car:29 %bad%car_part:111 %bad%do_it:88 %bad%doubt:54 %bad%elsewhere:96
%bad%family:91 %bad%gone_car:33 %bad%how_long:69 %bad%leave_me:56 %bad%lift:44 %bad%meaning:-183 %bad%message:64
%bad%money:58 %bad%noise:-27 %bad%odometer:24 %bad%on_way:26 %bad%phone:73 %bad%question:33 %bad%refuse:-53
%bad%season:28 %bad%shift_it:55 %bad%staff:254 %bad%start_again:104 %bad%thanks:50 %bring:-42 %bring%busy:-68
%bring%call_off:-45 %bring%do_it:53 %bring%doubt:53 %bring%elsewhere:-28 %bring%how_long:45 %bring%leave_me:-27
%bring%message:-22 %bring%on_way:79 %bring%opening:31 %bring%refuse:-44 %bring%start_again:26 %bring%wrong_one:129
%busy:33 %busy%fails:73 %busy%leave_me:-27 %busy%message:31 %busy%refuse:93 %busy%shift_it:-31 %busy%staff:-40
%busy%thanks:-29 %call_off:-43 %call_off%car_part:34 %call_off%do_it:-90 %call_off%doubt:54 %call_off%elsewhere:61
%call_off%fails:139 %call_off%how_long:74 %call_off%leave_me:33 %call_off%message:-182 %call_off%money:-31
%call_off%noise:28 %call_off%odometer:29 %call_off%on_way:51 %call_off%opening:30 %call_off%phone:71
%call_off%question:143 %call_off%refuse:44 %call_off%shake:-22 %call_off%shift_it:30 %call_off%staff:93
%call_off%start_again:27 %call_off%thanks:26 %call_off%who:34 %call_off%wrong_one:46 %car:-42 %car%car_part:38
%car%do_it:38 %car%fails:-44 %car%gone_car:-110 %car%leave_me:28 %car%lift:-37 %car%meaning:-26 %car%message:22
%car%odometer:30 %car%on_way:35 %car%pay_day:-31 %car%phone:23 %car%refuse:-117 %car%start_again:41 %car%wrong_one:31
%car_part%fails:-77 %car_part%family:-25 %car_part%how_long:30 %car_part%leave_me:-41 %car_part%lift:33
%car_part%meaning:-29 %car_part%noise:-38 %car_part%opening:26 %car_part%phone:23 %car_part%place:-27
%car_part%refuse:103 %car_part%smoke_smell:-39 %car_part%staff:105 %car_part%thanks:61 %car_part%who:43 %do_it:-50
%do_it%elsewhere:-78 %do_it%family:-35 %do_it%gone_car:-29 %do_it%how_long:102 %do_it%leak:-30 %do_it%lift:39
%do_it%meaning:30 %do_it%message:-64 %do_it%money:29 %do_it%on_way:33 %do_it%opening:22 %do_it%pay_day:-25
%do_it%phone:32 %do_it%place:44 %do_it%question:51 %do_it%refuse:181 %do_it%season:-34 %do_it%shake:22
%do_it%shift_it:-48 %do_it%who:45 %do_it%wrong_one:36 %doubt%gone_car:44 %doubt%how_long:72 %doubt%message:-89
%doubt%money:51 %doubt%on_way:34 %doubt%question:24 %doubt%shift_it:61 %doubt%staff:-25 %doubt%start_again:-22
%elsewhere%family:-22 %elsewhere%machine:34 %elsewhere%message:38 %elsewhere%money:144 %elsewhere%question:104
%elsewhere%refuse:-128 %elsewhere%shift_it:25 %elsewhere%staff:-26 %elsewhere%start_again:-30
%elsewhere%wrong_one:-56 %fails:-115 %fails%gone_car:-23 %fails%how_long:-36 %fails%leave_me:-22 %fails%meaning:-24
%fails%message:-56 %fails%refuse:134 %fails%wrong_one:-47 %family:-48 %family%how_long:22 %family%message:35
%family%money:38 %family%refuse:-42 %family%shift_it:-40 %gone_car:-85 %gone_car%on_way:36 %gone_car%phone:24
%gone_car%question:75 %gone_car%start_again:24 %gone_car%thanks:25 %gone_car%wrong_one:74 %how_long:30
%how_long%message:37 %how_long%money:-52 %how_long%on_way:47 %how_long%opening:33 %how_long%question:-47
%how_long%refuse:60 %how_long%staff:24 %how_long%wrong_one:57 %leak:-23 %leak%refuse:26 %leave_me%message:-60
%leave_me%on_way:75 %leave_me%opening:27 %leave_me%pay_day:76 %leave_me%question:75 %leave_me%refuse:-30
%leave_me%season:68 %leave_me%staff:29 %leave_me%start_again:-40 %lift:49 %lift%odometer:25 %lift%on_way:-42
%lift%opening:85 %lift%pay_day:32 %lift%phone:31 %lift%question:-50 %lift%refuse:23 %machine:51 %machine%meaning:-30
%machine%message:42 %machine%refuse:49 %meaning:-152 %meaning%money:28 %meaning%on_way:70 %meaning%phone:-62
%meaning%question:-56 %meaning%refuse:-59 %message:133 %message%on_way:245 %message%pay_day:71 %message%phone:-43
%message%question:54 %message%refuse:-107 %message%season:111 %message%shift_it:78 %message%start_again:-238
%message%thanks:-24 %message%who:-26 %money:176 %money%odometer:143 %money%on_way:-52 %money%pay_day:99
%money%phone:30 %money%refuse:-33 %money%shift_it:120 %money%staff:40 %money%start_again:60 %money%thanks:138
%money%wrong_one:69 %noise:-80 %noise%question:-30 %noise%refuse:69 %odometer:56 %odometer%pay_day:45
%odometer%phone:-24 %odometer%question:-45 %odometer%refuse:62 %odometer%start_again:53 %on_way%opening:34
%on_way%phone:56 %on_way%smoke_smell:-29 %on_way%staff:33 %on_way%start_again:-22 %opening%question:-49
%opening%wrong_one:34 %pay_day%phone:26 %pay_day%shift_it:-30 %phone%question:-111 %phone%shift_it:-64
%phone%staff:27 %phone%start_again:51 %phone%who:92 %place:-98 %place%question:-32 %place%refuse:33 %place%staff:-28
%place%wrong_one:63 %question%refuse:-43 %question%season:32 %question%shift_it:80 %question%start_again:-68
%question%thanks:22 %question%who:-73 %question%wrong_one:59 %refuse:-37 %refuse%season:32 %refuse%shift_it:-72
%refuse%staff:142 %refuse%start_again:111 %refuse%thanks:67 %refuse%who:-37 %season%shift_it:-46 %season%who:26
%shake:-102 %shift_it:-41 %shift_it%start_again:-40 %shift_it%thanks:48 %shift_it%wrong_one:-27 %smoke_smell:-78
%staff:54 %staff%thanks:-64 %start_again:-93 %start_again%who:73 %start_again%wrong_one:72 %thanks:-29 %who:-73
%who%wrong_one:24 %wrong_one:-37 @?:-205 @after_visit:209 @after_visit_cant_complain:-53 @after_visit_not_really:68
@car:-87 @confirm:-60 @day:-93 @nothing:31 @odometer:24 @offers:-177 @reading:-46 @time:-132 @walk_in:-49 ^_$:-24
^_a:-96 ^_al:-42 ^_all:-38 ^_and:-32 ^_another:53 ^_any:-36 ^_are:-40 ^_bank:-33 ^_been:34 ^_brakes:-30 ^_broke:-28
^_cada:28 ^_call:-33 ^_can:-111 ^_cant:-78 ^_car:-50 ^_como:-75 ^_cost:-31 ^_could:-39 ^_cuando:-34 ^_cuanto:-79
^_de:-122 ^_did:-45 ^_do:-74 ^_enough:-58 ^_esta:-52 ^_everything:-58 ^_fine:-28 ^_fui:25 ^_gracias:38 ^_great:82
^_hasta:-28 ^_hey:-37 ^_how:-72 ^_i:33 ^_im:-40 ^_in:-25 ^_is:-152 ^_it:-90 ^_la:77 ^_last:69 ^_les:30 ^_let:-41
^_llamenme:-22 ^_llevo:42 ^_lo:-36 ^_lol:23 ^_mal:29 ^_mas:27 ^_me:-33 ^_meh:62 ^_mejor:-23 ^_mil:27 ^_my:-102
^_nadie:97 ^_nel:22 ^_no:79 ^_not:26 ^_nothing:-23 ^_nunca:85 ^_oh:96 ^_oil:-34 ^_one:82 ^_only:-24 ^_otro:99
^_pesimo:37 ^_please:26 ^_por:34 ^_prefiero:-28 ^_pues:67 ^_puro:52 ^_quede:92 ^_quedo:-48 ^_sale:-24 ^_salio:43
^_scratch:-47 ^_se:-37 ^_si:-59 ^_siempre:86 ^_sin:-44 ^_so:30 ^_son:99 ^_still:61 ^_text:-41 ^_thank:-29 ^_thanks:75
^_the:156 ^_third:23 ^_this:127 ^_todo:-110 ^_too:-23 ^_took:43 ^_tuve:54 ^_ustedes:26 ^_uy:32 ^_very:38
^_waiting:-61 ^_we:-28 ^_when:-26 ^_why:109 ^_worst:44 ^_wow:57 ^_y:-75 ^_ya:-84 ^_yep:-40 ^_yes:-52 ^_yo:-43
^_you:81 ^_your:153 a:88 a_$:-32 a__car:28 a__for:-27 a__hora:-32 a__is:102 a__of:-24 a__off:143 a__time:-26
a__under:27 a__y:-24 a_good:-28 a_la:-50 a_lot:27 a_mechanic:-22 a_month:62 a_phone:32 a_que:-54 a_rip:143 a_ver:24
a_week:110 about_the:22 after:81 after_$:-27 after__you:24 after_you:63 again:25 agua:-27 ahora:31 ahora_si:26
ahorita:-31 aint:-24 al:-65 al_cien:-34 algo:72 all_$:-56 all__my:42 all_day:43 all_good:-41 all_i:24 all_over:51
already_$:-26 already_and:30 always:37 an:31 an_hour:29 and:194 and__dont:-36 and__it:-32 and__me:-26 and__never:-23
and__not:36 and__one:39 and__want:25 and_dont:-22 and_how:-23 and_i:29 and_im:26 and_it:59 and_nobody:70 and_the:23
and_what:-34 and_you:34 and_your:27 anda:-24 ando:-30 annoying:105 annoying_$:95 anos:26 another_bill:30 answer:35
antes_$:43 any:-78 appointment:-28 appreciate:25 appreciate_it:35 aqui:-22 are:-70 are_$:-26 are__hours:-23 arm:-22
as:-69 as_well:-41 asi:22 asi_no:29 ask:40 ask_me:-31 asked:65 asked_for:51 at:62 at_$:-34 at__counter:61 at__the:74
at_all:-34 at_and:-25 at_in:70 at_this:-23 at_work:23 at_your:44 ate:26 ate_my:24 atencion:70 atiende:23 aviso:-25
aviso_$:-25 baby:29 baby_$:33 back:65 back_$:60 back__for:26 back_on:29 bad:-191 bad_$:-136 bank:-52 bank__it:-28
bateria:-29 be:-23 be_better:-23 because:27 been__your:-30 been_to:-31 before:-24 being:125 best:-52 best_$:-50
bet:-28 bien:61 bien_el:48 bill:181 bill_$:28 bill_was:50 bonito:46 brake:-31 brakes:-59 brakes_feel:-26 broke:-74
bucks:39 buenos:22 bumper:43 but:-103 but_the:-41 but_what:-29 by:-47 by__mall:-31 by__name:-22 by_that:-22
by_the:-46 cada:45 call:-79 call_me:-66 called:76 called__back:64 called_me:60 came:38 came_back:-35 came_on:23
can:-209 can__me:-29 can_i:-42 can_you:-83 cancel_it:28 cancelen:39 cant:-104 cant_complain:-58 cap:48 car:86
car__i:25 cara:68 card:34 care_of:-25 caro:-37 carro_$:24 carro__ustedes:-34 cause:40 cerrado:23 changed__oil:33
changed_my:22 changing:77 charge:-54 charge_for:-30 charged:92 charged__for:29 charged_me:44 check:-39 chocaron:-24
chocaron_y:-22 cien:-34 cien_$:-32 clase:30 clase_de:30 clientes:24 close:-26 cobran:-42 cobran_$:26 cobran_por:-37
cobraron:99 cobraron__mas:24 cobraron_de:24 cobro:29 code:-45 come:102 come__it:67 come_back:32 come_in:55
como__que:-22 como_la:23 como_me:31 como_saben:-25 complain:-58 complain_$:-53 complaints:-78 con:172 con__que:35
con__trabajo:28 con_el:76 con_la:48 con_lo:25 con_los:-26 con_un:32 con_ustedes:50 contact:-26 contento:29
contesta:66 corriente:-25 cost:-51 costo:-31 could:-58 could_you:-57 couldnt:29 couldnt_be:28 counter:66 cual:-23
cuanto:-117 cuanto__el:-31 cuanto_me:-36 cuenta:64 da:-69 day:-52 day_$:-45 de:23 de_$:-42 de__a:29 de__llanta:52
de__llantas:-22 de__manana:28 de__no:-31 de__y:23 de_dinero:-24 de_la:31 de_las:-45 de_mas:41 de_que:-49
de_regreso:42 de_respeto:28 dealer:-30 dejaron:86 dejaron_el:30 del:-35 del__me:25 desde:71 desde_que:50 desk:59
devolvieron:77 dia:26 dia_$:24 dias:88 dicho:36 did:-74 did__last:-23 did_it:-24 did_my:42 did_that:-48 did_you:-65
didnt:146 dije:81 dijeron:49 dinero:34 do:-151 do__charge:-28 do__keep:81 do__own:-24 do_i:-34 do_it:-24 do_my:-23
do_not:-23 does:34 does__write:34 does_nobody:39 dollars:22 dont:-27 dont__me:75 dont__you:86 dont__your:-66
dont_have:-38 dont_know:-23 dont_text:55 dont_want:-23 door:40 dos:124 dos_dias:23 dos_veces:106 down_$:32
down_on:-50 drive:-51 drive_$:-23 drives:-28 drove:33 during:32 duro:51 early:63 early_$:57 el:57 el__a:-23
el__fue:39 el__todo:29 el__y:45 el_carro:43 el_dia:48 el_dinero:-22 el_gerente:27 el_mismo:22 el_muchacho:24
el_numero:-50 el_otro:-38 el_servicio:-29 el_telefono:78 el_trabajo:76 el_trato:31 el_viernes:-22 else:-35
en__noche:54 en__taller:-33 en_el:-32 en_otro:-28 encargado_$:-27 encontraron:-57 encontraron_$:-51 enough_$:48
entregaron:23 era:33 es_$:-47 es__mismo:28 es__que:-22 es_un:45 escriban:26 escriban_$:-33 escriben:57 ese:-96
ese_servicio:-44 eso:-71 eso_$:-26 esperando:65 espere:39 esta:-172 esta_$:-50 esta_muy:-38 estaba:24 estan:-25
estas:24 estuvo:26 even:46 ever:43 every:61 every__i:55 every_time:55 everything:-77 everything_was:-51 explain:27
falta:38 falta__respeto:28 falta_de:42 far:-31 favor_$:-32 feel:78 feel_like:30 fell:-22 feo:35 few:-23 fine:-32
fine_$:-39 five:53 five_$:22 fix:37 fix_it:26 fixed:45 for:81 for__i:34 for__me:-29 for__same:37 for_a:30 for_an:28
for_me:-91 for_nothing:140 for_that:24 forever:101 forget_it:23 forgot:64 forgot_to:68 four:54 freno:-41 from:-25
from_the:22 from_your:-24 front_desk:41 fue__que:-28 fue_lo:-28 fui:103 garage:-26 gasto:58 gave:29 gente:32 get:-65
get_a:-28 get_my:-40 get_paid:-24 getting:84 give:-29 give_me:-28 going:22 going_to:-43 gone:33 good:-95 good_$:-30
got__for:30 got__wrong:-41 got_a:-35 got_it:39 got_my:38 got_the:-47 got_to:-24 gracias_$:-54 gracias__nada:79
gracias_por:67 grease:56 grease__over:36 grease_all:36 great:27 great_$:-51 great__bill:30 great_another:30
great_job:-34 grosero:38 guess:-30 gusto:101 guy_$:-41 guys:-49 guys_$:43 habia:45 habia_dicho:29 hablar:-46
hablar__el:27 hablar_con:-43 hableme:-23 hablo:26 hace:-22 had:76 had_to:63 happier:-25 happy:86 happy_with:89 has:33
hasta:-59 hasta_que:-33 hate:25 have__wrong:-32 have_been:41 have_my:-30 have_never:-30 have_no:35 have_the:-31
hay:-45 he:-55 he_llevado:-30 here:-57 here_$:-61 hey:-33 hicieron_esperar:39 high:-31 high_$:-22 highway:22 hit:-29
hizo:-23 hood:31 hood_$:22 hora_y:25 horas:95 horas_$:37 hours:58 how__was:40 how_bad:-32 how_come:37 how_i:63
how_many:-43 how_much:-47 hoy:26 hubcap:60 human:-26 hundred:24 hung:34 hung__on:34 hung_up:34 i:120 i__a:-40
i__been:25 i__do:-23 i__drive:-23 i__for:28 i__it:-24 i__my:-78 i__never:-50 i__off:-22 i__paid:-22 i__that:31
i__the:-27 i__to:-42 i__told:40 i__with:24 i_asked:22 i_came:30 i_come:56 i_didnt:61 i_do:-27 i_feel:73 i_get:-59
i_got:53 i_hate:25 i_have:37 i_left:55 i_live:-37 i_need:-52 i_paid:48 i_said:-26 i_think:-40 i_told:40 i_want:29
i_was:174 i_will:-29 idea:-40 if__like:44 if_i:-36 if_you:22 igual:47 igual_$:44 ill:-23 im:83 im__of:71 im__the:-28
im__work:43 im_at:47 im_still:61 in_$:-49 in__a:28 in__and:46 in__car:42 in__is:51 in__morning:90 in__state:-24
in_a:-47 in_another:-38 in_it:75 in_june:-27 in_my:26 in_the:61 in_your:28 interesa:-22 interested:-22 invoice:44
ir:-26 is_$:-60 is__a:-94 is__bad:-23 is__bill:-31 is__i:42 is__new:59 is__than:36 is__the:26 is_all:23 is_getting:86
is_in:28 is_it:-40 is_not:-23 is_plenty:22 is_something:59 is_still:22 is_texting:-28 is_that:-32 is_there:-41
is_this:-53 is_tight:-30 is_wrong:32 is_your:-39 issues:-29 it:53 it__getting:27 it__in:48 it__not:24 it__ok:-41
it_back:-25 it_down:22 it_in:-30 it_is:148 it_still:52 it_was:-27 it_you:27 jaja:-40 jala:-31 june_$:-36 just:30
just__i:68 just__that:-24 keep:64 keep__me:76 keep_texting:70 kept:116 key:28 key_$:27 keys:34 know:-50 know_$:-22
know_you:-34 la:86 la__es:35 la__no:42 la__pasada:31 la__vez:130 la__y:-27 la_atencion:43 la_cara:67 la_casa:-25
la_cuenta:52 la_lista:-29 la_llamada:-26 la_llanta:23 la_manana:28 la_noche:66 la_otra:85 la_tarde:-22 la_ultima:35
la_verdad:39 la_vez:28 las:-24 las__la:35 las_de:41 las_llantas:-35 last:95 last__and:54 last__you:45 last_bill:27
last_month:-38 last_night:-53 last_time:194 last_visit:71 last_week:-67 late_$:-46 later:-37 le:-210 le__el:-26
le__la:-25 le__servicio:-25 le_hicieron:-67 le_pusieron:-22 left:178 left_$:-27 left_a:88 les:112 les_dije:33 let:-58
let_me:-36 lied:39 lied_to:32 light_$:22 light__on:27 lights:-22 list:-37 list_$:-39 live:-40 live_in:-34 llamada:-32
llamada_$:-37 llame_el:-23 llanta:28 llanta_$:36 llantas:-34 llantas_$:-30 llego:-22 llegue:24 llevado:-30 llevo:31
lo:-76 lo__a:-30 lo__ahi:27 lo__con:61 lo__el:-30 lo__me:30 lo_hicieron:-56 lo_mismo:40 lo_que:43 lo_robaron:-32
lol:-59 lol_$:-25 look:-23 look_at:-33 looking:-22 loose:52 loose_$:48 los:-99 los_mensajes:-72 lose:22 lost:23
lost_my:51 lot:53 lunes:-23 lunes_$:-22 luz:-23 made:31 makes:54 makes_the:53 mal:-23 mal_$:-98 mal_el:-42
mal_servicio:52 mala:43 mall:-31 mall_$:-31 malo:-63 man:25 manager:44 manana_$:-32 mandan:48 mandarme:-22 manden:-49
manden_nada:-42 manners:78 many:125 many_texts:151 mas:59 mas__menos:30 mas_mensajes:-29 mas_o:30 mas_que:34 me:149
me_$:-71 me__a:-30 me__algo:84 me__bien:26 me__como:46 me__el:36 me__en:29 me__esperar:40 me__hablar:-35
me__hicieron:-44 me__horas:30 me__im:42 me__in:41 me__june:-39 me__la:47 me__mal:36 me__mas:-65 me__mensajes:54
me__my:-28 me__nada:36 me__que:27 me__robaron:-40 me__your:-37 me_about:-45 me_again:-73 me_atiende:23 me_back:33
me_cobraron:82 me_da:-70 me_dejaron:75 me_escriban:36 me_escriben:57 me_espero:-22 me_every:38 me_for:48 me_gusto:96
me_hicieron:68 me_i:-33 me_in:-81 me_interesa:-22 me_late:-32 me_llame:-30 me_lo:-59 me_manden:-41 me_off:-76
me_puede:-23 me_pueden:-25 me_puedo:-34 me_quede:-33 me_quedo:-22 me_salio:65 me_so:109 me_tienen:51 me_today:28
me_trataron:33 me_twice:22 me_up:-25 me_urge:-40 me_with:-35 meant:-29 mecanico_$:-24 mechanic:-23 meh:59 mejor:-60
menos:28 mensaje:112 mensaje_$:44 mensajes_$:-63 mensajes__vez:-22 mensajes_otra:-22 messages_$:-28 mi:99 mi__de:67
mi_carro:31 mi_telefono:-28 miles:-23 mine:-24 minutes:37 mismo:61 mismo_dia:-22 missing:22 molesto:42 money:61
money_$:48 money__tight:-31 money_is:-31 month_$:-36 month_is:82 more:118 more_$:-31 more_texts:-31 morning:40
morning_$:59 mostrador:34 muchacho:27 mucho:22 must_be:-24 must_have:-23 muy:103 muy_caro:-26 my:177 my__a:30
my__back:63 my__has:27 my__is:-49 my__refund:-61 my__was:50 my_bill:108 my_bumper:33 my_car:173 my_card:26 my_door:31
my_hubcap:58 my_last:-22 my_mind:-24 my_money:28 my_oil:66 my_radio:29 my_refund:25 my_schedule:-34 my_seat:60
my_tax:-64 my_tires:25 nada:133 nada_$:158 nada__ustedes:-26 nadie:187 nadie_me:60 name:-29 necesito:-54 need:-136
need_to:-42 needed:39 nel:22 never:22 never__me:51 never__to:-28 never_been:-45 never_called:38 new_$:39 next:-47
ni:73 ni_me:44 nine:26 no:23 no_$:-33 no__a:-39 no__at:-40 no__bien:89 no__con:22 no__de:-42 no__en:65
no__escriban:58 no__gusto:96 no__here:-40 no__last:24 no__lo:33 no__manden:-33 no__me:26 no__mensajes:-33 no__nada:44
no__puedo:-34 no__que:-49 no__quiero:24 no__texts:-38 no__vale:37 no_and:27 no_como:27 no_complaints:-78 no_es:-27
no_esta:-25 no_hay:-30 no_issues:-29 no_it:86 no_me:55 no_more:-63 no_one:50 no_quede:69 no_quedo:112 no_quiero:-34
no_se:39 no_sigue:59 no_soy:-35 no_tengo:-48 no_y:52 no_you:75 nobody:207 nobody__a:23 nobody_here:-30 noche:63
noche_$:67 noise_$:50 nomas:37 none:28 not:123 not__and:-31 not__car:-54 not__it:26 not__me:-30 not__now:-25
not__this:-26 not__to:-29 not__with:136 not_a:-49 not_ever:-23 not_for:-23 not_going:72 not_happy:148 not_me:-32
not_my:-63 not_now:-30 not_really:80 not_right:-24 not_the:-32 not_today:-29 not_worth:-33 nothing:99 nothing_$:146
now:-102 now_$:-43 nuevo:55 nuevo_$:58 number:-36 number_$:-27 numero:-73 numero_$:-58 nunca:103 nunca_me:111
nuts:-22 o:-29 o_menos:30 ocupo:-26 of:126 of_my:25 of_you:-27 off:83 off_$:178 off_the:-22 oh:91 oh__another:59
oh_great:30 oil:71 oil_$:23 oil__came:30 oil_cap:38 oil_light:41 ojala:29 ok_but:-31 on__phone:39 on__refund:58
on__seat:26 on__th:-25 on__way:-36 on_my:44 on_the:24 on_time:31 once:23 one:116 one_$:-39 one__a:60 one__and:31
only:-43 only__me:-22 open:-58 or:-77 otra__me:35 otro:28 otro__mas:70 otro_taller:-49 out__my:46 out_of:50 over:32
over_my:36 overcharged:24 pague:47 paid:29 para:-67 para_que:-29 para_un:26 part:27 pasa:-24 pasada:31 pasar:-37
pass:-22 pay_for:42 paying:-36 pedal:-31 pedi:23 people:119 people_are:28 peor:130 persona:-42 persona_$:-23
pesimo:77 pesimo_servicio:34 phone_call:26 pieza:23 please_$:-52 plenty:40 plug:50 poca:49 poner:77 pongan:41 por:34
por__el:22 por__me:86 por__no:-83 por_eso:-26 por_favor:-22 por_lo:24 por_nada:84 por_que:38 porque:28
porque_ustedes:22 precio:-54 precio_$:-26 prefiero:-34 preguntar:23 prende:-22 pricey:-32 promised:53 pueden:-44
puedo:-73 pues:89 pues_$:22 pues_no:59 puro:52 put:49 put_me:-27 put_the:52 que:112 que_$:-23 que__con:60 que__de:127
que__el:-38 que__ese:-30 que__hicieron:-30 que__llame:-25 que__lo:-35 que__mal:-70 que__malo:-46 que__otro:36
que_es:-75 que_esta:-24 que_falta:26 que_fue:-23 que_hora:-34 que_le:-79 que_mal:49 que_me:-29 que_precio:-23
que_tan:-95 que_tanto:45 que_voy:25 quede:130 quede_muy:99 quedo_$:25 quedo__el:36 quedo_bien:39 quick:-35
quienes:-40 quienes__ustedes:-25 quienes_son:-40 quieren:110 quiero:-31 quiero__de:-36 quiero__me:-42 quiero_nada:-30
quiero_que:-45 quote:33 quote_$:70 radio:45 really:108 really_$:106 recibir:-25 recordatorios:26 reembolso:66
regresaron:23 regreso:52 remind_me:-27 repair:81 respeto:48 ridiculous:36 ridiculous_$:22 right__you:32
right_after:32 right_now:-36 rip:143 ripped:93 robaron:-55 robo:39 rock:-64 rude:75 rude_$:58 ruido:-24 runs:-29
saben:-26 sacan:85 sacar:30 said:85 sale:-75 salgo:-22 salio:97 salir:-55 salir_$:-24 salir_de:-22 same:87 say:39
schedule:-44 scratch:-36 scratch_me:-24 scratch_that:-22 se:-56 se_me:-83 se_vale:37 seat:59 seat_$:38 seats:36
see:-61 see_you:-22 sell:47 send:-46 send_me:-31 senor_$:-26 sent:26 service:25 servicio:-34 servicio_$:-27 shop:27
shop_$:-42 shop_is:37 si:-44 si__bien:-31 sick:116 sick_of:120 siempre:78 sigue:97 sigue_igual:53 sin:27 since:36
since_$:-23 six:23 sloppy:27 so:63 so_$:-27 some:43 someone__me:-23 somewhere:31 son:100 son__de:41 son_las:34
son_ustedes:-25 soon:-30 sorry:-28 soy:-70 soy_la:-22 st:-26 state:-26 still:112 still__about:41 still__on:57
still_on:-23 still_waiting:62 stop:-68 stop_$:-29 stuff:79 stuff_$:49 su:52 sure:-39 swapped:-23 take__off:-57
take_me:-56 taller:25 taller_$:58 tan:-36 tan__esta:-61 tan_mal:-43 tan_malo:-41 tanto:115 tardan:-24 tax:-88
tax_refund:-64 te:-23 tech:36 telefono:42 tell:-58 tell_me:-36 temprano:36 temprano_$:48 ten:36 tengo:-52 terrible:41
text:168 text_$:-25 text__about:-30 text__again:-51 text_you:-27 texted:35 texting_$:-41 texting_me:67 textos:-26
textos_$:-28 th:-49 th_$:-31 than:79 than_the:28 thank:-100 thank_you:-99 thanks:22 thanks_$:-45 thanks__nothing:133
thanks__the:-30 thanks_for:80 that:30 that_$:-62 that__text:30 that__the:36 that_bad:-23 that_is:26 that_last:-23
that_name:-22 that_one:-22 the__and:-43 the__came:-32 the__guy:-42 the__last:-29 the__light:26 the__oil:41 the__on:26
the__thing:-24 the__you:79 the_baby:24 the_best:-48 the_car:-42 the_counter:28 the_day:-26 the_dealer:-25 the_kid:24
the_last:43 the_light:-35 the_mall:-31 the_morning:90 the_noise:26 the_oil:22 the_old:32 the_phone:62 the_price:30
the_quote:68 the_repair:37 the_texts:-74 the_th:-47 the_tires:-22 the_warranty:24 the_work:60 then:-35 then_$:-23
there__a:35 there_a:-35 there_with:29 they:36 thing_$:-40 thing_to:47 think_you:-30 third:95 third_time:46
this__me:-23 this__the:50 this_a:-37 this_is:170 those:-31 three:91 three_times:27 through:58 thurs:-23 tienen:26
tight:-37 tight_$:-22 til:-48 till:-44 till_the:-28 time:72 time_$:-29 time__you:-24 time_and:39 time_i:53 time_it:22
times:110 tire:-38 to:38 to__back:41 to__for:37 to__me:59 to__my:50 to__shop:-39 to_come:29 to_me:43 to_my:31
to_pay:25 to_put:33 to_sell:48 to_text:-44 to_the:-27 to_you:-35 to_your:-30 toda:25 todavia:32 todavia_no:-39
today:37 today_$:43 todo:-59 todo__dia:77 todo_bien:-52 todo_el:76 told:137 told_me:40 told_you:35 too:-59 too_$:-195
too__for:-31 too__texts:86 too_many:100 too_much:33 took:96 took__to:-27 took_it:-30 top_$:-23 top_off:25 trabajo:35
trabajo_no:53 traded:-24 traffic:-36 traffic_is:-35 tratar:22 trataron:33 trato:38 treated:84 tres:71 tres__que:28
tres_veces:36 trust:129 try:-23 tuve:63 tuve_que:57 twice:153 twice_$:32 two:73 two_hours:25 ultima:33 ultima__me:34
ultima_vez:25 un:108 un__y:24 una:131 una__de:54 una__y:52 una_hora:50 under__hood:25 uno:78 uno_$:46 unos:42 up:-28
up_$:-25 up_on:22 urge:-40 ustedes:63 ustedes_$:40 uy:32 va:-32 vale_$:34 veces:168 veces_$:87 vender:34 venia:26
ver:53 vez:87 vez_$:-58 vez__me:25 vez_me:56 vez_pasada:28 vez_que:35 vibrates:-31 viernes:-32 visit:75 visit_$:30
voy_a:-53 voy_me:51 voy_pero:25 wait:-93 waited:60 waiting__my:-22 want:-22 want_my:25 want_to:-36 was:137
was__and:68 was__last:-51 was__there:87 was_in:-44 was_just:65 was_rude:36 was_told:41 wasnt:61 way:97 way_$:-27
way_too:128 we:-58 week:24 week_$:-55 week_is:25 well:-24 well_$:-31 went:-22 were:39 what__it:23 what__the:-60
what__you:-71 what__your:-49 what_a:167 what_are:-23 what_do:-26 what_i:83 what_is:-82 what_time:-38 what_was:-31
what_you:35 when:-46 while:27 while_im:44 who:-42 who__texting:-26 who_is:-51 who_you:-22 whoever:24 why:101
why__you:124 why_are:50 why_do:79 why_not:-43 will:-115 will__be:-26 with:51 with_$:31 with__i:50 with__texts:-61
with_a:28 with_my:-22 woke:28 wonderful:72 work:95 work_$:105 works:-22 worse:79 worse_$:82 worst:58 worth:-35
would:-57 wouldnt:24 wow:90 write:49 write__down:42 wrong:67 wrong_$:24 wrong_guy:-39 wrong_person:-22 wrote:40 y:228
y__me:80 y__no:25 y__que:-36 y_ahi:-24 y_cuanto:-24 y_el:-22 y_le:-25 y_me:43 y_nadie:57 y_ni:71 y_no:37 y_quiero:25
y_ya:51 ya:36 ya_$:31 ya__hicieron:-40 ya__lo:-43 ya__voy:35 ya_le:-45 ya_me:-53 ya_no:-22 ya_se:39 ya_van:23 yep:-42
yes:-80 yes_$:-39 yesterday:39 yo:-31 yo_no:-43 you:223 you_$:-189 you__a:57 you__at:28 you__fix:24 you__for:-24
you__have:-38 you__i:-28 you__me:106 you__my:164 you__so:58 you__stop:-23 you__texting:84 you__the:-41 you__to:87
you__today:-25 you_are:-30 you_bet:-28 you_can:-46 you_charge:-46 you_charged:36 you_close:-30 you_dont:-26
you_forgot:43 you_got:-63 you_guys:-52 you_had:33 you_have:-63 you_keep:94 you_left:121 you_like:36 you_lost:49
you_never:69 you_open:-46 you_people:92 you_put:46 you_said:83 you_say:22 you_take:46 you_tell:-30 you_text:89
you_there:-29 your:123 your__and:41 your__desk:37 your__for:-29 your__have:44 your_front:37 your_guy:33
your_hours:-35 your_the:-43 youve:46 youve__me:40
"""
