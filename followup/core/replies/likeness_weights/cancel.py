"""What speaks for and against `cancel`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "cancel"
BIAS = -315
WEIGHTS = """\
#abaj:79 #able:78 #abou:-57 #abys:43 #acan:53 #acar:38 #acci:29 #acer:42 #ache:31 #acio:101 #adas:41 #adez:31
#adie:51 #afra:73 #agai:64 #agam:43 #agen:67 #ague:27 #ahor:-86 #ains:49 #aint:39 #aite:31 #aiti:54 #ajar:58
#alar:-33 #alca:51 #aled:35 #algu:44 #alid:38 #alio:54 #alla:-54 #alli:81 #alos:32 #alta:-41 #alto:-70 #aman:36
#amos:61 #anan:69 #ance:203 #anco:-27 #ando:62 #ands:-37 #anec:35 #anes:46 #ange:42 #anne:27 #anoc:64 #anse:70
#anto:-35 #anul:325 #anyh:42 #anym:54 #anyt:-30 #anyw:36 #anzo:50 #apen:-39 #apon:-46 #appe:115 #appo:47 #apun:161
#aque:-30 #arca:-32 #arde:35 #ardi:-39 #argo:45 #arle:43 #arlo:-30 #arme:42 #arou:29 #arqu:-31 #arre:79 #asad:-81
#asam:-35 #asdf:-39 #asis:127 #aske:-34 #asse:47 #atch:27 #atel:27 #aten:37 #ater:91 #atev:72 #athe:28 #atio:49
#atte:93 #aunq:-45 #auto:-34 #aves:36 #avia:-42 #avid:-38 #avis:61 #avor:32 #aybe:35 #ayer:69 #ayin:30 #babe:29
#baby:46 #back:-39 #bail:61 #baja:47 #baje:40 #bame:42 #bate:49 #beat:-28 #bebe:64 #beca:45 #befo:-53 #belt:39
#biar:-76 #bier:30 #blac:-27 #bloc:-31 #body:55 #bono:46 #book:116 #borr:159 #both:36 #bout:-57 #boyf:31 #bran:56
#brer:54 #budd:42 #bulb:-40 #burs:47 #butt:41 #bysi:31 #cale:39 #canc:223 #cand:-28 #cans:68 #cant:53 #canz:50
#carg:100 #caro:28 #cars:43 #casa:42 #casi:-34 #caug:43 #cayo:71 #ccid:31 #cela:119 #cele:88 #cell:-68 #celo:77
#cend:27 #chea:39 #ched:37 #chem:46 #cher:40 #chic:36 #cide:78 #cido:37 #cinc:34 #cita:100 #cket:61 #clic:-37
#cloc:49 #clos:-32 #cobr:38 #colg:28 #come:63 #comi:127 #como:-42 #conf:-40 #conm:78 #cont:57 #corr:-111 #cost:37
#coul:-69 #cour:108 #covi:102 #crap:32 #crat:40 #crib:37 #crip:-29 #ctio:-33 #ctob:28 #ctub:27 #cuan:29 #cuat:44
#culp:51 #cult:-45 #cupe:-68 #cust:34 #dads:27 #dang:43 #dash:-28 #davi:-42 #days:186 #dead:48 #deep:31 #deje:168
#dejo:29 #delo:37 #denv:38 #depo:61 #dere:40 #ders:42 #desa:168 #desi:49 #dezc:31 #dias:-27 #dida:39 #diga:47
#digo:29 #dimo:-28 #ding:58 #dios:31 #disc:54 #ditc:35 #dnes:33 #doub:30 #down:-33 #draw:107 #drop:-37 #dule:51
#each:28 #eads:-31 #eage:-36 #earr:29 #ears:30 #eart:65 #ease:79 #ebre:54 #ecau:45 #eces:54 #ecid:27 #ecio:43
#ecit:-60 #ecto:89 #ecue:29 #edad:41 #edam:53 #eded:27 #edia:-36 #edne:33 #edul:51 #eede:27 #eeke:42 #efec:127
#efon:46 #efor:-53 #egan:-34 #egar:27 #egre:33 #egue:-54 #egur:40 #eing:29 #ejel:84 #ejem:42 #ejen:35 #ejor:53
#eken:42 #elad:54 #elal:67 #elam:56 #elea:76 #elef:46 #elel:94 #elen:75 #elep:-37 #elic:-38 #elim:40 #ella:28
#elle:-96 #ello:-40 #else:99 #elva:-42 #elvo:69 #emer:31 #emin:-31 #emos:165 #emov:27 #empr:71 #empt:60 #enas:-41
#enca:51 #enci:84 #enda:161 #ened:36 #enen:-43 #ener:35 #enga:28 #engo:-82 #enin:85 #enla:92 #enle:83 #enme:52
#enor:-39 #ense:-43 #ensi:34 #enta:43 #enti:38 #entu:27 #enty:30 #enve:38 #eocu:-75 #epen:64 #epho:-37 #epor:-37
#epos:61 #eran:52 #erar:63 #erda:38 #erdi:38 #erdo:32 #ered:72 #erge:31 #eria:38 #erie:41 #erme:30 #erou:43 #erst:47
#erti:40 #erva:121 #esar:43 #esch:-54 #escr:36 #esda:30 #eser:140 #esia:31 #esis:53 #espa:57 #espe:107 #espu:37
#esta:63 #esti:69 #etal:-55 #eted:39 #etin:-27 #etir:47 #eval:-44 #ever:159 #ewhe:36 #expe:109 #exto:-65 #exts:-37
#ezco:31 #fall:-53 #falt:-93 #fath:39 #favo:32 #febr:54 #fect:109 #feli:-38 #fell:81 #figu:-32 #find:-31 #fine:52
#fire:37 #firm:-60 #fixe:69 #flat:-32 #flus:-31 #foll:-31 #fono:46 #fore:-53 #forg:119 #frai:78 #free:54 #from:70
#full:42 #furi:31 #gain:64 #game:28 #gamo:-48 #gand:-33 #gear:27 #genc:71 #gend:68 #gero:43 #gets:-39 #ging:44
#give:35 #gles:31 #goin:81 #golf:-46 #good:-49 #grac:54 #gret:42 #guar:114 #guna:-41 #gure:-32 #guro:38 #guys:-34
#hace:62 #haga:36 #hago:65 #haha:-44 #half:-42 #hani:38 #happ:77 #hate:71 #have:62 #hdra:110 #head:-39 #heap:39
#hear:55 #heat:32 #hedu:51 #heet:51 #hell:-30 #help:-27 #heme:46 #here:28 #hick:35 #high:-37 #hile:44 #hing:107
#hist:57 #hold:84 #hole:34 #home:115 #hora:65 #hori:-40 #hosp:42 #hour:37 #howi:66 #hree:42 #hrou:40 #hung:51
#iber:188 #ible:102 #ices:-38 #icke:93 #icki:-32 #idea:-33 #ided:47 #iece:72 #iemp:81 #iend:34 #iene:-31 #ient:-34
#iere:-33 #iero:60 #igam:38 #ight:40 #igle:31 #igur:-32 #iles:-38 #ilia:43 #ille:39 #imos:-38 #impo:48 #inal:-33
#ince:49 #ings:-29 #ingu:-41 #intm:54 #into:32 #intu:-27 #inut:34 #ioni:29 #iper:-33 #ippi:40 #ires:-46 #irme:-29
#iscu:54 #isim:-50 #isit:58 #isnt:-28 #ista:70 #isti:122 #isto:88 #ital:42 #itan:32 #itar:-33 #itel:95 #iten:50
#ithd:110 #itin:52 #itte:34 #ixed:50 #jeme:39 #jemo:43 #joke:-28 #jove:30 #jury:40 #just:59 #kend:42 #kers:34
#kids:32 #kill:102 #king:115 #knoc:27 #know:-46 #lace:35 #lack:-27 #lado:79 #lake:85 #lala:86 #lame:63 #land:-44
#lane:46 #lann:-36 #lant:63 #larl:45 #larm:-30 #laro:-32 #last:35 #late:-83 #lati:42 #lcan:51 #ldin:41 #leas:110
#leav:37 #lefo:46 #lego:78 #legu:-39 #lela:173 #leme:55 #lenm:52 #leph:-37 #lesi:31 #lest:58 #lets:66 #leve:-27
#lgun:51 #lice:-47 #lick:-38 #lida:33 #lift:84 #limi:34 #line:33 #ling:119 #llan:65 #lleg:56 #llin:63 #llow:-45
#lock:30 #loos:28 #lose:-39 #lost:-31 #lowi:-31 #lpen:53 #ltur:-45 #lune:-87 #lush:-31 #lvan:-42 #lver:32 #lvid:79
#lyin:43 #mach:28 #make:-34 #mala:35 #malo:43 #mana:33 #mane:43 #mann:45 #mant:-55 #marc:-34 #marq:-31 #mart:42
#mayb:35 #mber:-34 #mbia:-83 #mbie:40 #mbio:57 #mbre:60 #mean:-40 #mech:38 #mejo:53 #mela:27 #ment:89 #merg:31
#meta:-56 #migo:79 #mija:42 #mile:-38 #mili:43 #mill:-27 #mily:-30 #mind:44 #mine:31 #ming:103 #mins:-117 #minu:48
#miso:35 #miss:-84 #mist:57 #mita:32 #mode:-43 #mole:58 #mont:33 #more:67 #morr:94 #mosl:42 #moth:-46 #move:-56
#mple:41 #mpor:-28 #mpos:76 #mpre:64 #mpty:60 #muer:39 #muev:-80 #mult:34 #must:38 #myse:29 #naci:29 #nada:-65
#nadi:51 #nana:68 #nate:27 #navi:-38 #ncan:-67 #ncar:51 #ncel:223 #ncen:27 #ncia:53 #ncle:-49 #ncom:-29 #ndam:-27
#ndan:80 #nday:27 #nded:30 #nder:60 #ndim:-28 #ndin:28 #neci:35 #need:135 #neja:-43 #nene:32 #nera:45 #nero:43
#nesd:33 #neve:-50 #next:45 #nfir:-35 #ngam:-108 #nged:49 #nger:37 #ngun:-41 #nico:55 #niec:72 #nigh:32 #ning:51
#nmig:74 #nner:28 #nobo:57 #nock:27 #nomb:65 #noon:-81 #note:-31 #nowe:51 #nozc:-27 #nque:-53 #nsio:34 #nste:-28
#ntac:-28 #ntam:81 #ntar:62 #ntem:71 #ntes:34 #nths:44 #ntit:-33 #ntme:54 #ntre:38 #nule:233 #nute:38 #nver:38
#nyho:42 #nymo:54 #nyth:-30 #nywa:36 #oads:35 #ober:28 #obod:57 #obra:36 #ocid:36 #oclo:74 #ocup:-59 #odas:28
#odav:-42 #oday:184 #oder:115 #odos:39 #odre:116 #odys:29 #oing:76 #oint:42 #okin:72 #olan:-45 #oldi:41 #oles:54
#ollo:-31 #olve:32 #olvi:68 #ombr:54 #omer:34 #omin:123 #omor:94 #onda:41 #ones:-76 #oney:33 #onfi:-35 #onga:-74
#onis:29 #onmi:78 #onoc:37 #onoz:-27 #onte:49 #onth:33 #onto:61 #ooki:72 #ooks:43 #oose:28 #open:-33 #oppe:-30
#opti:-39 #oras:34 #orge:128 #orit:-43 #orke:65 #orra:-41 #orre:85 #orri:-33 #orro:107 #orry:100 #orta:-28 #orte:51
#orto:-38 #osed:-27 #osib:113 #osit:52 #oslo:42 #ospi:42 #ospo:-60 #otal:31 #otem:-31 #othi:-38 #otor:35 #otro:53
#ouch:55 #ough:32 #ould:-62 #oull:53 #ound:53 #ourt:147 #oved:36 #ovel:-28 #oven:30 #ovid:102 #owed:68 #owin:42
#oyfr:31 #ozco:-27 #paci:65 #pads:28 #paga:-37 #pago:-45 #pagu:27 #pasa:-48 #pase:-29 #pass:62 #payi:-40 #pect:97
#pena:71 #pend:39 #peni:74 #pent:68 #pera:35 #perd:79 #pere:96 #perm:28 #pero:65 #pita:42 #plac:35 #plan:64 #plea:80
#plug:37 #poca:55 #poco:42 #pode:110 #podr:108 #poin:42 #pong:-74 #porq:45 #port:-46 #posa:66 #posi:174 #posp:-60
#ppen:80 #ppin:40 #ppoi:47 #preo:-75 #prin:28 #prob:-32 #pull:82 #punt:144 #puso:40 #qued:45 #ques:54 #quit:166
#raba:64 #raca:53 #radi:-46 #rado:28 #raid:78 #raig:-43 #ranc:-54 #rand:62 #rang:29 #rano:31 #rasa:-56 #rase:-41
#ratc:40 #rate:-32 #rave:56 #rday:31 #rden:90 #rder:37 #rdid:39 #rdon:44 #reac:29 #reag:-36 #rear:41 #rece:41
#recu:36 #regr:33 #remi:-31 #remo:155 #rend:-28 #renm:41 #rent:37 #reoc:-75 #repe:68 #rero:54 #resc:-54 #rese:119
#reti:47 #revo:61 #rgad:29 #rgen:71 #rget:128 #ribo:40 #rice:-48 #rida:42 #ride:-55 #ried:33 #ries:-36 #rike:92
#riou:31 #rita:-43 #rles:43 #rmis:28 #robl:-32 #rojo:-29 #roke:27 #rong:-84 #rops:-32 #roug:40 #roun:56 #rous:43
#rows:42 #rren:114 #rrep:68 #rrie:-33 #rrow:94 #rryi:39 #rsda:45 #rtes:36 #rtos:-40 #ryin:33 #saca:38 #sada:32
#sado:-79 #sali:37 #same:-73 #saqu:-30 #saro:33 #savi:-43 #sche:51 #scra:72 #scul:54 #sday:75 #sela:33 #sell:-28
#sema:-28 #semo:38 #seno:-39 #sens:-38 #sent:-32 #serv:120 #shee:29 #shin:33 #ship:50 #show:116 #sibl:107 #sica:-33
#siem:71 #sier:-29 #sign:-64 #simo:-42 #sinc:30 #sist:173 #sitt:49 #sked:-34 #slot:82 #some:56 #sona:47 #sorr:62
#spac:72 #spen:53 #sper:110 #spit:42 #spon:-60 #spot:85 #spri:28 #spue:37 #stak:57 #stan:-35 #star:-28 #stay:70
#stea:-36 #sted:-66 #ster:71 #stia:49 #stil:-50 #stir:127 #stom:62 #stop:-146 #stor:27 #stre:-36 #stri:92 #stuf:-27
#subi:44 #summ:123 #sure:-40 #susc:-29 #susp:54 #swap:-32 #tach:51 #tact:-33 #take:106 #tale:36 #tame:106 #tant:-40
#tapo:-46 #tard:-128 #tare:45 #tarm:52 #taro:-55 #tead:-28 #tear:31 #tela:87 #teme:40 #tend:121 #teni:50 #tera:30
#terd:45 #teri:49 #test:50 #teve:72 #text:-55 #tful:42 #than:-59 #that:67 #thdr:110 #then:-53 #ther:45 #thes:-37
#thro:47 #tick:62 #tigh:35 #till:-88 #ting:32 #tire:77 #tiro:58 #tmen:50 #tmrw:98 #tobe:28 #toca:39 #toda:166
#todo:55 #toma:58 #tome:34 #tomo:84 #took:-70 #tota:31 #trab:84 #trad:-48 #trai:-52 #tras:-65 #tree:-28 #tres:35
#trik:92 #tron:43 #tten:84 #tter:32 #tubr:27 #tuff:-27 #tumb:85 #tune:-35 #turn:68 #twen:33 #uand:71 #uard:114
#ubie:49 #ubre:27 #uche:43 #ucho:42 #uddy:42 #uedo:37 #uelv:28 #uert:47 #uest:68 #ueva:-54 #ueve:-38 #uita:-37
#uite:254 #uled:44 #ulel:74 #ulen:113 #ully:42 #ulpe:60 #ultu:-45 #umba:32 #unca:-55 #uncl:-49 #unde:50 #undo:178
#unes:-87 #unfo:27 #unio:32 #unqu:-45 #unta:43 #unte:83 #unto:45 #uper:32 #urge:33 #urio:27 #urno:89 #urns:32
#ursd:45 #urse:-40 #urst:47 #uscr:-29 #ushi:41 #uspe:54 #uste:-44 #utes:46 #vacu:27 #vala:-44 #vamo:76 #vemo:-53
#veng:-47 #vera:40 #vers:27 #very:31 #vida:-36 #vide:79 #vino:30 #visa:36 #visi:58 #viso:54 #vola:-45 #voqu:39
#vuel:33 #want:27 #wate:30 #wedn:33 #well:74 #went:38 #what:47 #whil:44 #whol:40 #wing:31 #wish:52 #with:86 #wont:40
#word:-27 #work:-33 #wrap:27 #wron:-84 #xpec:109 #xtea:-39 #xted:63 #xtos:-52 #yeah:40 #yest:45 #yfri:31 #yhow:42
#ying:117 #ymen:34 #ymor:54 #yone:28 #youl:53 #ysel:29 #ysit:31 #yway:36 %again_later:52 %again_later%agree:-32
%again_later%away:76 %again_later%bad:-52 %again_later%bring:69 %again_later%call_off:-48 %again_later%car:29
%again_later%do_it:-27 %again_later%family:-29 %again_later%gone_car:-36 %again_later%leave_me:82
%again_later%lift:71 %again_later%money:42 %again_later%odometer:71 %again_later%on_way:36 %again_later%pay_day:94
%again_later%place:-34 %again_later%question:42 %again_later%refuse:93 %again_later%season:42
%again_later%shift_it:46 %again_later%thanks:-51 %again_later%wrong_one:157 %agree:-105 %agree%bring:-53
%agree%busy:65 %agree%call_off:-42 %agree%car:93 %agree%car_part:35 %agree%elsewhere:32 %agree%family:67
%agree%leak:29 %agree%leave_me:-68 %agree%meaning:60 %agree%odometer:-48 %agree%on_way:-129 %agree%phone:156
%agree%place:-30 %agree%question:52 %agree%refuse:-81 %agree%smoke_smell:45 %agree%staff:35 %agree%wrong_one:-62
%away:232 %away%bring:85 %away%busy:-92 %away%call_off:36 %away%car_part:-51 %away%do_it:28 %away%fails:67
%away%family:97 %away%leave_me:27 %away%lift:53 %away%message:48 %away%money:35 %away%noise:-46 %away%on_way:-140
%away%opening:32 %away%phone:27 %away%place:57 %away%question:70 %away%refuse:47 %away%shift_it:-62 %away%staff:63
%away%start_again:82 %away%wrong_one:-108 %bad:78 %bad%call_off:97 %bad%car:37 %bad%car_part:-52 %bad%elsewhere:-36
%bad%fails:40 %bad%family:34 %bad%gone_car:58 %bad%leave_me:34 %bad%money:59 %bad%on_way:89 %bad%pay_day:-29
%bad%question:114 %bad%refuse:35 %bad%season:42 %bad%staff:-42 %bring:216 %bring%car:73 %bring%car_part:42
%bring%elsewhere:66 %bring%gone_car:73 %bring%how_long:-31 %bring%leak:61 %bring%leave_me:94 %bring%lift:-44
%bring%meaning:-32 %bring%message:34 %bring%money:66 %bring%odometer:72 %bring%on_way:-38 %bring%opening:79
%bring%phone:72 %bring%place:43 %bring%question:-118 %bring%refuse:-43 %bring%shift_it:-31 %bring%smoke_smell:48
%bring%staff:75 %bring%thanks:69 %bring%who:33 %bring%wrong_one:-55 %busy:76 %busy%call_off:34 %busy%fails:-34
%busy%leave_me:-39 %busy%odometer:-36 %busy%on_way:43 %busy%place:48 %busy%question:-36 %busy%start_again:-32
%busy%wrong_one:68 %call_off:290 %call_off%car:58 %call_off%car_part:91 %call_off%do_it:59 %call_off%doubt:61
%call_off%elsewhere:41 %call_off%fails:149 %call_off%family:89 %call_off%gone_car:119 %call_off%how_long:88
%call_off%leak:27 %call_off%lift:-73 %call_off%meaning:67 %call_off%message:-75 %call_off%money:159
%call_off%noise:-72 %call_off%opening:96 %call_off%phone:131 %call_off%question:168 %call_off%refuse:-46
%call_off%season:54 %call_off%shift_it:82 %call_off%smoke_smell:36 %call_off%staff:33 %call_off%start_again:59
%call_off%thanks:98 %call_off%who:91 %call_off%wrong_one:-76 %car%car_part:-28 %car%do_it:-29 %car%fails:-29
%car%leave_me:63 %car%odometer:-96 %car%on_way:53 %car%place:36 %car%question:30 %car%refuse:-31 %car%shift_it:27
%car%start_again:-27 %car%thanks:-42 %car%wrong_one:71 %car_part%do_it:105 %car_part%elsewhere:55 %car_part%fails:-68
%car_part%gone_car:76 %car_part%leave_me:56 %car_part%money:36 %car_part%on_way:64 %car_part%phone:-71
%car_part%place:48 %car_part%refuse:-57 %car_part%season:-28 %car_part%shift_it:35 %car_part%start_again:-64
%car_part%wrong_one:-48 %do_it%doubt:38 %do_it%family:39 %do_it%how_long:67 %do_it%lift:61 %do_it%message:-30
%do_it%noise:-36 %do_it%odometer:66 %do_it%on_way:48 %do_it%place:47 %do_it%question:50 %do_it%refuse:-37
%do_it%season:35 %do_it%staff:46 %do_it%start_again:-71 %do_it%who:-33 %do_it%wrong_one:50 %doubt:83 %doubt%family:36
%doubt%gone_car:29 %doubt%leave_me:39 %doubt%message:-29 %doubt%phone:44 %doubt%question:-28 %doubt%refuse:30
%doubt%start_again:34 %doubt%wrong_one:35 %elsewhere:114 %elsewhere%gone_car:-37 %elsewhere%leak:-32
%elsewhere%lift:39 %elsewhere%message:52 %elsewhere%odometer:98 %elsewhere%on_way:44 %elsewhere%phone:-68
%elsewhere%shift_it:45 %elsewhere%staff:30 %elsewhere%who:-33 %fails:87 %fails%gone_car:72 %fails%how_long:37
%fails%leave_me:-33 %fails%meaning:29 %fails%message:73 %fails%odometer:-63 %fails%on_way:95 %fails%opening:-28
%fails%pay_day:43 %fails%phone:-61 %fails%question:-50 %fails%shift_it:31 %fails%staff:74 %fails%who:27
%fails%wrong_one:75 %family:102 %family%gone_car:-37 %family%how_long:-45 %family%lift:45 %family%money:48
%family%on_way:59 %family%phone:-32 %family%place:-44 %family%refuse:130 %family%shift_it:40 %family%thanks:-50
%family%wrong_one:51 %gone_car:84 %gone_car%leave_me:54 %gone_car%lift:75 %gone_car%meaning:-39 %gone_car%message:-57
%gone_car%money:-94 %gone_car%noise:-31 %gone_car%on_way:-43 %gone_car%opening:47 %gone_car%phone:-28
%gone_car%refuse:108 %gone_car%smoke_smell:28 %gone_car%staff:75 %gone_car%wrong_one:82 %how_long%lift:47
%how_long%odometer:79 %how_long%opening:41 %how_long%phone:-42 %how_long%question:60 %how_long%wrong_one:36 %leak:59
%leak%odometer:-38 %leak%on_way:-32 %leak%staff:45 %leave_me%meaning:34 %leave_me%opening:34 %leave_me%pay_day:54
%leave_me%place:99 %leave_me%question:68 %leave_me%refuse:-51 %leave_me%staff:42 %leave_me%wrong_one:-41
%lift%on_way:-42 %lift%phone:-39 %lift%question:34 %lift%refuse:91 %lift%start_again:29 %lift%wrong_one:92
%meaning:61 %meaning%wrong_one:56 %message%on_way:82 %message%phone:31 %message%refuse:-38 %message%thanks:-40
%money:41 %money%odometer:-27 %money%on_way:49 %money%pay_day:-52 %money%place:28 %money%question:69
%money%wrong_one:37 %noise:-101 %odometer:53 %odometer%phone:-77 %odometer%question:-94 %odometer%refuse:-52
%odometer%shift_it:58 %odometer%start_again:45 %odometer%who:68 %on_way:-122 %on_way%opening:44 %on_way%pay_day:50
%on_way%phone:106 %on_way%question:49 %on_way%refuse:205 %on_way%season:134 %on_way%shift_it:73
%on_way%smoke_smell:-29 %on_way%staff:59 %on_way%start_again:72 %on_way%thanks:44 %on_way%who:-33
%on_way%wrong_one:-53 %opening:75 %opening%phone:-32 %pay_day:120 %pay_day%place:32 %pay_day%refuse:27
%pay_day%season:36 %pay_day%start_again:-28 %phone:-58 %phone%place:-62 %phone%question:-47 %phone%refuse:-46
%phone%season:54 %phone%shift_it:54 %phone%staff:-138 %phone%who:122 %phone%wrong_one:84 %place%refuse:60
%place%season:32 %place%shift_it:-47 %place%who:-36 %question:-95 %question%start_again:-40 %refuse:152
%refuse%shift_it:-43 %refuse%smoke_smell:29 %refuse%staff:39 %refuse%who:28 %refuse%wrong_one:-52 %season:64
%season%shift_it:61 %season%thanks:-53 %season%who:39 %season%wrong_one:30 %shift_it:-172 %shift_it%start_again:-66
%shift_it%thanks:-30 %staff:99 %staff%who:32 %staff%wrong_one:39 %start_again:-84 %start_again%wrong_one:45 %who:91
%wrong_one:41 @?:-190 @after_visit:-30 @confirm:395 @confirm_:-120 @day:-229 @later:96 @nothing:367
@nothing_opt_out:-33 @odometer:-28 @offers:-133 @time:-244 @walk_in:-60 ^_$:-118 ^_a:-67 ^_ahi:-37 ^_all:-61
^_are:-45 ^_asi:-33 ^_be:-82 ^_been:36 ^_borre:37 ^_borren:58 ^_borrenme:51 ^_boss:-27 ^_broke:-31 ^_call:28
^_cambie:60 ^_cambio:40 ^_can:-159 ^_cancel:-147 ^_cancelar:-140 ^_cancele:98 ^_cancelen:67 ^_change:49 ^_changed:59
^_con:29 ^_could:-40 ^_count:40 ^_cuanto:-61 ^_denme:-33 ^_do:-61 ^_drop:71 ^_el:-100 ^_en:-36 ^_ese:-29 ^_eta:-51
^_fine:-35 ^_free:28 ^_fyi:-70 ^_gave:32 ^_give:91 ^_got:-63 ^_gracias:-80 ^_hasta:-31 ^_have:-29 ^_hay:-33
^_help:-27 ^_hi:-60 ^_hold:-41 ^_how:-29 ^_i:-79 ^_id:53 ^_im:-55 ^_imposible:30 ^_is:-97 ^_it:-70 ^_just:-45
^_keep:-28 ^_kill:63 ^_la:-56 ^_le:42 ^_lease:-35 ^_let:56 ^_lets:28 ^_llego:-46 ^_lol:-51 ^_make:-104 ^_mande:-29
^_mejor:35 ^_mi:-29 ^_min:-96 ^_my:-95 ^_necesito:-47 ^_need:-231 ^_nel:-66 ^_no:-116 ^_nop:-86 ^_nos:-37 ^_not:-46
^_of:-39 ^_olvide:37 ^_on:-59 ^_opt:-58 ^_perdon:-40 ^_please:-56 ^_podemos:-31 ^_por:-46 ^_puede:41 ^_puedo:-101
^_pull:75 ^_quit:-84 ^_quite:100 ^_quitenme:48 ^_re:-28 ^_remove:-50 ^_retiro:47 ^_ring:-30 ^_salio:27 ^_scrap:28
^_see:-45 ^_siempre:97 ^_sin:-30 ^_so:-81 ^_sold:-46 ^_someone:-48 ^_sorry:-45 ^_still:-65 ^_stop:-31 ^_take:-63
^_tengo:36 ^_the:56 ^_voy:-46 ^_want:-34 ^_was:-28 ^_we:65 ^_what:-166 ^_whatever:53 ^_who:-41 ^_will:-29 ^_wont:35
^_y:-126 ^_ye:-55 ^_yeah:28 ^_yep:-37 ^_yes:-101 ^_yo:-61 ^_you:-49 a:51 a__call:28 a__cita:78 a__esposo:31
a__hora:-63 a__la:28 a__lo:-61 a__manana:58 a__no:-27 a__of:41 a__or:30 a__so:34 a__thing:-33 a__y:31 a_call:-33
a_customer:49 a_dar:31 a_estar:-61 a_flat:-29 a_hacer:71 a_la:-52 a_las:-120 a_llevar:28 a_manana:-35 a_mechanic:30
a_no:100 a_otro:116 a_poder:123 a_que:-29 a_salir:-44 a_ser:38 a_ver:42 able:87 able_to:87 about:-57 about_$:-29
abre:-31 add:-52 adelante:43 adelante_$:64 afraid:78 after:38 after_$:-93 after_all:119 again__the:34 again_in:41
against:48 agenda:113 agradezco:31 ahi:-166 ahi__a:-41 ahi__vemos:-33 ahi_nos:-33 ahi_voy:-121 ahora:-46 ahora_$:-38
ahora_no:-29 ahorita:-40 ahorita_no:-34 aint:61 al_trabajo:28 alcanzo:50 alcanzo_a:94 algun:51 all:91 all_$:35
all__for:-79 all__the:38 all_set:-109 alla:-34 am:97 am__going:-29 am_and:63 am_i:-38 amanecio:35 an:35
an_appointment:-93 and:122 and__i:-39 and__my:62 and__the:59 and_do:-28 and_get:51 and_i:66 and_im:39 and_now:-32
and_please:-29 and_put:-30 and_take:53 and_then:32 ando:70 ando_sin:35 anoche:64 anoteme:-31 anule:42 anulela:79
anulen:71 any:-47 any_of:31 anyhow:42 anyhow_$:42 anymore:54 anymore_$:62 anything:-30 anything_$:28 anyway:36
anyway_$:36 apenas:-39 appointment:47 appointment_$:46 appointment__i:27 appointment__the:-74 appointment_for:-93
appointment_is:-33 aqui_$:63 are_$:-50 are_on:-37 around:29 arrepenti:68 asi:90 asi_$:32 asi_es:-34 asi_no:53
asi_que:56 ask:27 asked:-34 at:-38 at_$:-110 at__and:63 at__desk:-36 at_all:75 at_am:63 at_it:27 at_on:-30 at_the:-32
atrasado:-55 aunque:-45 avisar:34 aviso:43 ayer:67 ayer_me:43 babe:29 babysitter:31 back:-35 back_$:-35 back_out:87
bail:53 baja_$:37 bateria:49 bay:63 be:141 be_$:-30 be__at:-32 be__my:39 be__on:70 be__to:34 be__you:38 be_able:56
be_coming:73 be_in:43 be_late:-40 be_on:-45 be_removed:28 be_the:-38 bebe:64 because:45 been_on:36 before:-53
before_$:-33 belt:40 bien_feo:52 billed:38 black:-27 bono:46 book:-35 book_me:-35 booking:85 booking_$:95 borre:35
borre_mi:37 borren:59 borrenme:56 borrenme_de:41 boss__me:31 bother:36 boyfriend:31 broke_my:-41 buddy:42 buen:27
buen_dia:37 bug:28 bulb:-40 burst:47 bus:-33 busco_$:33 but:-44 but__need:69 by_mistake:57 by_the:-53 c:-144
calendar_$:-31 call:-67 call_$:-32 call__my:29 call__off:91 call__thursday:79 call__with:-32 call_it:77 call_me:-211
call_off:121 call_the:37 called:66 called_in:65 calling:61 cambiar:-71 cambiar__cita:-58 cambiar_mi:-57 cambie:56
cambie__una:28 cambie_de:29 cambie_por:39 cambio:42 cambio__planes:46 cambio_de:31 camioneta_$:-29 can__come:-39
can__do:-44 can__drop:-34 can__get:28 can__me:31 can__on:-34 can__that:42 can_be:39 can_do:40 can_my:-49 can_we:-57
can_you:-92 cancel:63 cancel_$:-198 cancel__appointment:-125 cancel__i:56 cancel__thursday:63 cancel__you:58
cancel_culture:-45 cancel_it:173 cancel_me:29 cancel_please:-82 cancel_tomorrow:41 cancelar_$:-165 cancele:71
cancele_$:30 cancele__de:-48 cancele__favor:44 cancele_la:-27 cancele_por:48 cancele_y:47 cancelela:94 cancelled:-96
cancelo:77 cant:53 cant__in:-40 cant__it:104 cant__the:28 cant__tomorrow:44 cant_come:106 cant_drive:-31 cant_get:-64
cant_make:73 cant_see:-51 cant_stop:-32 cant_wait:-108 car_$:27 car__the:-33 cargo:51 carro_$:-38 carro__el:-28
carro__lo:44 carro_el:38 carro_en:-28 cars:43 casa:42 caught:43 caught_fire:43 cause:-34 cayo:71 cel:-68 cel_$:-60
change:-37 change__appointment:-96 change_it:-50 change_my:-96 changed:49 changed_$:-33 changed__mind:59
changed_my:67 check_with:33 chiste:31 cinco:34 cita:110 cita_$:53 cita__el:-31 cita__favor:-31 cita__manana:-35
cita_de:44 cita_del:44 cita_es:-35 cita_para:-43 cita_por:-31 cita_que:43 cita_y:56 cobran:56 come:101 come_$:77
come_at:-30 come_tomorrow:34 coming:127 coming_$:42 coming__the:83 coming_tomorrow:43 como:-40 como_esta:-28
compre:-41 con:87 con__de:-27 con__encargado:34 con__me:53 con__no:44 con_el:77 con_ese:-29 con_lo:-49 con_que:43
con_ustedes:52 conmigo:78 conmigo_$:-31 corte:51 cost:47 could:-69 could_do:-48 count:37 count__out:71 count_me:71
course:-39 covid:102 cuando:71 cuando__el:37 cuando__la:38 cuando_cobre:47 cuanto:-36 cuanto_$:34 cuanto__va:-44
cuanto_me:-47 cuenta:-31 cuente:43 cuente_conmigo:59 cuenten:29 cuenten_conmigo:29 culture:-45 customer:34
customer_$:43 dad:-41 dads:27 dangerous:43 dangerous_to:51 dar:30 daughter__it:-27 day:-95 day_after:-41 days:-45
de:143 de__agenda:113 de__al:37 de__iglesia:40 de__no:36 de__por:55 de__y:-52 de__ya:61 de_aqui:63 de_hoy:66 de_la:80
de_las:40 de_manana:81 de_mi:-49 de_planes:46 de_que:-68 de_su:-58 dead:48 decided:47 decided_against:48 deep:31
deja:-41 dejo:29 del:213 del__por:61 del_dia:55 del_jueves:29 del_martes:46 del_trabajo:61 del_viernes:86 denme:-33
denme_de:-33 denver:38 deposit:55 despues__las:37 despues_de:29 despues_del:-27 dia:-35 dia_$:-31 dia__de:46
dia_de:46 dia_no:-34 dias:-27 did__myself:43 did_it:74 digame:38 digo:29 dios:31 disculpe_$:31 disculpen:53 ditch:35
do:-66 do_$:-39 do__at:-47 do__get:52 do__have:-27 do__need:-36 do__owe:30 do_it:53 do_tomorrow:-52 do_tuesday:-28
does_that:30 don:55 done__my:41 done_by:-35 dont__it:33 dont__my:-286 dont__that:49 dont__the:53 dont__to:77
dont_give:-73 dont_need:203 dont_want:57 double:46 down:-34 down_for:-58 drive_for:-29 drop__appointment:79
drop__car:-66 drop_it:-38 drop_my:62 drop_off:-75 drop_the:54 drops:-32 el:28 el__a:-55 el__ayer:30 el__dia:-32
el__en:-33 el__esta:32 el__la:-40 el__no:42 el__y:75 el_carro:70 el_dealer:34 el_dia:-35 el_encargado:29
el_hospital:47 el_lunes:-72 el_mes:29 el_miercoles:-52 el_mismo:-32 el_precio:30 el_seguro:42 el_tapon:-46
el_verano:-28 el_viernes:-105 else:73 else_$:52 emergencia:31 empty:60 en__casa:46 en__dealer:31 en__hospital:47
en__llantera:34 en__lugar:-36 en__no:50 en__parte:-34 en__taller:31 en__verano:-28 en_la:31 en_mi:-38 en_otra:-35
en_otro:59 en_pie:-34 en_su:-27 en_verano:30 encargado:29 encargado_$:34 end:-56 entra_$:28 entre:46 er:39 era:-47
era_$:-39 es:-100 es__cita:-28 es__lo:27 es_mi:-43 esa__me:-41 esa_hora:-33 escribo:40 escribo_$:42 ese:74
ese__lo:-28 ese_carro:-34 ese_dia:70 ese_ya:-27 eso:-32 espacio:80 espacio_$:31 espere:55 esperen:75 esposa_$:44
esta:38 esta_$:77 esta__asi:-35 esta__lo:44 estar:-61 este:-67 estoy__en:-27 eta:-51 evenings:38 expect:109
expect_me:105 fall:-33 falta_$:-30 familia:41 familia_$:41 family:-30 father:39 favor:32 febrero:54 febrero_$:31
fell:79 fell_through:59 feo:52 few:-27 fiestas_$:-30 figure:-32 find:-31 fine:52 fire:37 fixed:69 flat:-32
following:-31 for:126 for_$:-32 for__at:-30 for__brakes:71 for__is:73 for__th:38 for__week:43 for_good:38
for_monday:-38 for_my:-49 for_now:86 for_someone:49 for_the:35 for_this:-36 for_tires:-35 for_today:104 for_what:35
forget:128 forget_about:94 forget_it:-55 free:35 free__my:61 friday:35 friday_$:-53 friday_morning:44 from:70
from__list:-39 from_my:-37 fue_el:-30 furious:31 fyi:-86 gave_me:-37 gear:27 gear_$:27 get:42 get__off:38 get_it:-83
get_me:32 get_the:40 get_there:28 gets:-39 give:37 give__spot:-32 give_me:-130 give_my:27 go:57 go_$:30 go_into:28
go_through:31 going:81 going__have:35 going__make:83 golf:-46 good:-30 good_$:32 good__tomorrow:-32 good_for:-42
got:52 got_$:-36 got__cancel:39 got__done:46 got__flat:-29 got__in:36 got_a:-48 got_it:-141 got_my:-77 got_the:29
got_to:167 gracias_$:31 gracias__no:-45 gracias_de:28 guy:59 guys:-34 guys_$:-29 gym:-43 hablar__el:35 hablar_con:36
hace__que:32 hace_falta:43 hacer:42 hacer_$:97 had:-43 had__done:-40 had_it:-30 had_to:-29 hago:65 hago_$:40 haha:-44
half:-37 half_past:-29 happening:79 has:47 has_a:91 hasta__me:63 hasta_el:-33 hasta_que:51 have:85 have__back:53
have__bail:29 have__on:32 have_a:-74 have_an:46 have_got:-32 have_it:-29 have_my:39 have_no:-70 have_the:-35
have_to:142 hay__que:-47 hay_dinero:36 hay_un:-27 heads:-29 heater:32 help:-27 her:52 here:-43 here_$:-27 hi:-60
hicieron_$:-37 hicieron__la:43 hicieron_el:31 his:-42 history:27 hit:27 hold:47 hold__spot:31 hold_my:-63
hold_off:-42 hold_that:50 hold_the:40 holding:45 home:115 hora:58 hora_$:50 hora__la:-41 hora__puedo:34 hora_me:-46
hora_no:34 hora_que:-31 hora_ya:41 horas:33 hospital:42 how:-87 how_about:-31 hoy:39 hoy__la:-35 hoy_manana:-57
hoy_no:29 hoy_por:45 hung:51 hung__on:51 hung_up:51 i:129 i__a:-69 i__an:-42 i__at:-30 i__be:108 i__by:41
i__coming:43 i__got:-35 i__in:-31 i__it:-36 i__make:32 i__no:-69 i__not:29 i__off:-32 i__so:-29 i__that:37 i__the:-46
i__to:34 i__up:37 i__use:43 i_am:68 i_booked:61 i_can:27 i_cant:74 i_come:-54 i_drop:-44 i_get:32 i_going:-29
i_got:42 i_mean:-34 i_set:48 i_still:35 i_took:-34 i_was:93 i_will:-27 i_wont:-28 i_would:-31 iba:-36 iba_a:-35
ice:29 id:37 id__to:84 id_be:34 idea:-33 idea_who:-28 if_i:84 iglesia:31 ill:-121 ill__there:-230 ill__to:40
ill_be:-152 ill_have:43 im:91 im__going:-38 im__to:27 im__with:37 im_a:34 im_afraid:78 im_coming:-72 im_done:41
im_down:37 im_going:34 im_good:-32 im_in:-29 im_not:37 im_off:-29 im_out:73 im_stuck:-38 imposible:76 in:130 in_$:-48
in__drop:-32 in__me:-42 in__the:-29 in__when:27 in_an:39 in_june:51 in_my:-41 in_the:-51 in_time:-46 in_tomorrow:37
in_town:-33 income:-29 instead:-28 into:37 ir:264 ir__a:-48 ir_a:57 ir_manana:40 ir_y:38 ire:165 ire_$:115 is:-72
is_$:-33 is__for:51 is__going:-98 is__i:50 is__in:-27 is__mechanic:31 is__so:-53 is_fine:67 is_it:80 is_off:34
is_only:28 is_out:-80 is_the:-37 is_tomorrow:-60 is_up:-31 isnt:-28 it:162 it__an:58 it__friday:30 it__if:33
it__is:57 it__no:-28 it__now:34 it__of:-52 it__on:40 it__only:28 it__out:34 it__so:27 it__start:35 it__the:-27
it__to:-37 it__totaled:28 it__week:-35 it__you:39 it_anymore:88 it_be:-54 it_dangerous:30 it_do:38 it_for:27 it_i:-34
it_in:42 it_is:-48 it_isnt:-72 it_not:-57 it_off:51 it_on:33 it_right:28 it_so:58 it_sunday:35 it_to:-54 it_today:31
it_tuesday:-94 it_was:30 it_wont:34 it_you:78 jaja_$:51 job:-31 job_so:-33 joke:-28 joven:30 jueves_$:77 jueves_y:-40
junta:-56 junto:32 jury:40 just:52 just__in:-59 just__it:178 just__you:-28 just_the:29 keep:43 keep_me:-29 key:-33
keys_in:-34 kid_has:34 kid_is:27 kids:32 kill:108 knocked:27 knocked__out:27 know:-44 la:79 la_$:-51 la__a:80
la__ahi:-109 la__cancele:74 la__de:70 la__del:89 la__hasta:34 la__jaja:-38 la__la:-33 la__mas:-41 la__me:44
la__para:-36 la__pero:73 la__por:-72 la__que:79 la__si:-29 la__ya:-41 la__yo:37 la_agenda:113 la_alarma:-36
la_bateria:35 la_casa:36 la_cita:119 la_de:-55 la_familia:41 la_hago:77 la_iglesia:40 la_lista:71 la_llantera:40
la_luz:-40 la_manana:-54 la_mia:34 la_molestia:49 la_renta:47 la_voy:135 la_vuelta:34 las_$:-50 las__en:30 las__y:41
las_fiestas:48 las_horas:29 last:35 last__so:27 last_night:98 last_time:-29 late:-74 late_$:-42 le:91 le__a:-47
le__el:-41 le__la:64 le_agradezco:31 le_puse:38 lease:-47 les:57 let:70 let_it:-32 let_the:39 lets:66 lets__in:43
lets__it:-61 lets__the:44 lets_out:27 life_$:-36 lift:84 like_$:-27 like_an:-35 like_to:69 llamar:-28 llame_el:27
llantera:34 llegando:-33 llegar:50 llegar_$:30 llego:78 llego_me:58 llevar_a:-32 llevo_$:54 lo:98 lo__de:29 lo__el:30
lo__en:34 lo__hoy:70 lo__la:-47 lo__listo:30 lo__manana:29 lo__me:-43 lo__no:-38 lo__un:36 lo_cambie:39 lo_de:62
lo_deje:27 lo_del:37 lo_mio:98 lo_que:-51 lo_saque:-30 lo_voy:-28 longer__it:-43 loose:28 los:-46 los__a:27
los_ninos:35 los_sabados:27 los_textos:-29 lost:-31 lost_my:31 lunes:-87 lunes_$:-33 lunes__la:-31 lunes_a:-30
luz_del:-39 make:-29 make__today:31 make_it:91 mala:36 malos:32 manana:68 manana_$:36 manana__las:-32 manana_a:-50
manana_me:37 manana_por:27 manana_y:-49 mande:-29 mande_$:-29 martes:42 martes_por:46 mas:-96 mas_$:-68
mas_adelante:48 may:47 may_$:34 maybe:35 maybe__the:27 me:166 me__a:64 me__bien:52 me__can:-30 me__el:88 me__hizo:28
me__i:32 me__in:47 me__la:-31 me__las:29 me__llamar:-28 me__mi:36 me__my:-49 me__nada:-30 me__of:39 me__que:38
me__that:-34 me__the:72 me__this:-44 me__thursday:-30 me__time:-30 me__to:-35 me__today:71 me__todo:38
me__tomorrow:32 me__when:27 me__y:35 me__you:34 me_about:-55 me_again:32 me_arrepenti:68 me_back:-61 me_cobran:51
me_down:-60 me_es:46 me_esperen:75 me_from:114 me_fue:-34 me_hicieron:35 me_hizo:-39 me_i:-30 me_la:-56 me_off:27
me_olvida:-54 me_on:-41 me_out:110 me_paguen:33 me_quiten:-68 me_so:67 me_that:-34 me_the:-27 me_to:-42 me_toca:43
me_twice:31 me_up:28 me_vuelvan:-31 me_with:-32 mean:-34 mecanico_de:27 mechanic:38 media:-33 mejor:53 mejor_$:-28
mejor_el:-61 mejor_no:89 mejor_que:50 mes:43 metal:-55 metal_$:-55 mi:192 mi__a:77 mi__asi:-45 mi__pero:-35 mi__y:32
mi_cel:-50 mi_cita:87 mi_hora:92 mi_jefe:29 mi_lugar:61 mi_nombre:74 mi_turno:60 mija:42 miles:-38 min:-116 mind:75
mins:-117 minutes:46 mio:117 mismo_dia:-35 miss:-70 miss_it:-117 mistake:57 molestia:49 monday_$:48 monday_at:-30
month__so:30 month_or:30 months:44 morning_$:-33 mother:-33 move:-62 mover:-47 mucho:42 mucho_$:61 muevala:-44
mueve:-36 must:38 muy:-34 my:189 my__away:67 my__did:-47 my__dont:95 my__for:146 my__going:40 my__ill:36 my__im:-81
my__in:-57 my__is:34 my__off:41 my__please:45 my__so:-38 my__the:28 my__was:-29 my__will:38 my__with:-43
my_appointment:-62 my_brother:-40 my_car:-55 my_dad:-41 my_daughter:-33 my_father:39 my_list:-48 my_mind:59
my_money:-36 my_name:51 my_oclock:62 my_other:-37 my_place:50 my_slot:33 my_son:-31 my_thursday:45 my_time:176
my_tuesday:32 my_uncle:-36 myself:29 nada:-53 nada_$:-35 nada__me:-45 nada__que:33 nada_mas:-41 nadie:51 name:52
name_off:28 navidad:-38 need__cancel:59 need__change:-28 need__the:67 need__to:-48 need_an:-53 need_for:72 need_it:27
need_that:30 need_to:-91 needed:27 needs_it:59 nel:-66 nel_$:-67 never:-46 never_been:-27 never_mind:33 new_one:33
next:45 next_$:44 ni:96 ni_de:31 ni_me:29 night_before:-33 night_so:27 ninguna:-41 no_$:-304 no__a:83
no__cancele:-177 no__conmigo:190 no__de:-76 no__dinero:36 no__do:89 no__el:39 no__esa:-79 no__escriban:-30
no__esperen:76 no__falta:46 no__for:53 no__hago:77 no__hoy:-60 no__im:-33 no__ir:190 no__le:-29 no__llegar:40
no__manana:57 no__mio:27 no__necesito:39 no__needed:38 no__ninguna:-29 no__no:-39 no__now:-28 no__preocupe:-61
no__puede:40 no__quiten:-68 no__si:-94 no__va:101 no__vuelvan:-31 no__want:40 no__what:29 no__who:-28 no__with:-38
no__yo:-44 no_alcanzo:50 no_and:-30 no_can:93 no_car:31 no_el:-29 no_es:-56 no_gracias:-60 no_hace:42 no_idea:-29
no_ire:165 no_it:-73 no_le:-34 no_llego:168 no_longer:52 no_manana:-65 no_me:-28 no_necesito:32 no_need:58
no_ocupo:29 no_pero:-29 no_podre:116 no_puedo:181 no_que:37 no_quiero:29 no_show:101 no_soy:-85 no_tengo:-72
no_va:103 no_vamos:98 no_voy:467 no_way:30 no_worries:-36 nobody:28 nombre:65 nombre_$:38 nombre_de:27 noon:-55
nop:-86 nop_$:-86 nos:-101 nos__manana:-59 nos_vemos:-93 not:97 not_$:-52 not__after:30 not__the:-73 not__this:52
not__to:63 not_be:119 not_coming:233 not_going:44 not_happening:44 not_in:-30 not_to:32 not_tomorrow:-164 now:-90
now_$:-51 now__me:27 now_ill:40 now_it:-34 now_that:-34 number_$:-27 number__your:28 o_cuanto:34 oclock:74
oclock_$:64 october:28 october_$:28 octubre:27 octubre_$:27 of:65 of__th:52 of_course:-39 of_my:-54 of_that:55
of_town:28 off:42 off__appointment:29 off__for:-35 off__list:-51 off__so:-29 off_for:34 off_the:53 off_this:-44
off_thursday:87 off_tomorrow:85 off_work:-54 oiga:-39 oiga_y:-39 oil_$:-43 oil_change:38 ok_$:-27 olvida:-54
olvide:37 on:35 on__calendar:-60 on__i:29 on__list:30 on__morning:-37 on__th:71 on_friday:48 on_it:-69 on_me:-67
on_monday:54 on_the:-95 on_time:-45 on_you:85 onda:30 one_$:73 ones:-64 only__i:28 only_at:28 open_tomorrow:-40
opt:-58 opt_out:-53 or:-45 other:-44 other__is:-32 otra_parte:-34 otra_persona:87 otro:53 otro_$:61 otro_dia:-92
otro_taller:43 out:100 out_$:-95 out__back:-31 out__im:34 out__me:-32 out__town:28 out_and:43 out_for:120 out_of:42
out_on:-28 out_the:-46 out_when:34 over_$:-41 pads:28 pagar:-34 pagar_$:-34 paguen:33 paguen_el:34 para:36
para__dia:-38 para_nada:33 para_otro:-39 para_un:-35 part:47 parte:-48 pasame:-35 passed:47 past_$:-29 paying:-40
pedi:-38 pena:66 perdida:39 perdon:44 perdon_$:61 permiso:35 pero:65 pero__la:32 pero_no:34 person:-40 person_$:-28
persona:55 persona_$:47 phone__about:-37 phone_me:-33 pie_$:-34 place:34 plan_$:-43 planes:46 please:80 please_$:-67
please__me:36 please__my:124 please__the:36 please_cancel:129 please_dont:-214 please_remove:49 please_ring:35
plug:37 poca:55 poco:30 poder:115 poder_$:61 podre:116 podre_ir:50 pongame:-49 por:61 por__en:27 por__que:-33
por__tan:44 por__troca:28 por_ahora:50 por_avisar:28 por_el:32 por_la:-33 por_lo:-30 por_mi:-32 por_telefono:52
por_una:28 porq:29 posible:37 prendio:-27 preocupe:-61 price_$:-32 puede_$:27 puede__el:-33 puede__la:-37 puede_a:-33
puede_llamar:-27 puedo__a:-38 puedo__el:-35 puedo__mi:-32 puedo_cambiar:-30 puedo_hablar:-38 puedo_ir:35
puedo_llevar:-65 puedo_manana:58 pull:90 pull_my:37 push:-30 pushing:41 puso:43 put:-83 put__down:-32 put__on:-51
put_me:-72 que:103 que_$:-46 que__con:52 que__despues:-43 que__era:-45 que__gracias:27 que__hicieron:-33 que__la:-40
que__me:-56 que__no:-31 que__paguen:33 que_ando:34 que_cancelar:59 que_me:43 que_ni:33 que_pena:35 que_precio:-39
que_sea:-52 que_tenga:37 que_tengo:31 quedamos:53 quedo_con:38 quiero:45 quiero__lo:27 quiero_cancelar:83
quiero_la:30 quit:-44 quit_$:-52 quit__job:-33 quit__me:68 quit_texting:52 quitaron:-64 quite:124 quite__cita:67
quite_la:105 quiten__cita:50 quitenme__la:-34 quitenme_de:-41 rather_than:-36 rd_$:-47 re:-28 reach:28 reach_out:28
remove_$:-33 remove_the:48 removed:28 renta:47 report:-37 reschedule:-40 retiro:47 retiro_mi:47 ride:-55 roads:35
roads_are:35 rojo:-28 rojo_$:-27 room:38 round:27 sabados:27 sacar:38 salio:54 salir__trabajo:42 salir_del:42
same:-38 same_time:-27 saque:-30 saturday_$:-43 save:31 saw:30 school_lets:27 scrap:62 scratch:54 scratch_me:57 se:39
se__a:38 se__hizo:-36 se__llevo:-30 se__olvida:-54 se__que:-60 se_le:42 se_me:-46 se_preocupe:-61 se_va:56 sea:-52
see:-115 see__tomorrow:-44 see_you:-50 seguro:38 seguro_$:42 send:-27 ser:68 ser_$:28 set:-84 set_$:-60 set_for:-61
sheet:51 show:57 showing:66 showing_$:54 si:-180 si_voy:-127 siempre:71 siempre__voy:-66 siempre_no:125 sign:-35
sin:84 sin_falta:-30 since:30 six:-31 slot:82 slot_$:50 snow:-40 snowed:51 snowed_in:51 so:175 so_$:-57
so__better:-28 so__can:88 so__i:41 so__me:91 so__my:53 so_ask:36 so_cancel:98 so_im:27 so_it:-31 so_monday:-34
so_no:44 so_that:-32 so_what:-52 so_yes:-54 sold__car:44 sold_the:68 some:39 some_other:43 someone__me:-56
someone_else:55 someone_phone:-30 son:-51 son__de:-30 sorry:62 sorry_$:88 soy:-110 soy__persona:-33 soy_esa:-27
soy_la:-32 soy_yo:-44 spot:85 spot_$:73 spring:28 spring_$:35 still:-50 still__my:43 still_coming:-79 stop:-144
stop__me:-97 stop__time:-32 stop_in:-32 stop_texting:-97 stranded:37 strike:92 stuff:-27 su:-43 su_lista:-57
sunday_night:-39 sunday_so:31 sure:-40 sure_thing:-32 swapped_the:28 take:49 take__off:74 take_it:41 take_us:28
talk__my:-43 tambien_$:31 tan:66 tan_tarde:44 tantito:-33 tapon:-46 tarde:-68 tarde_$:-38 tax:36 te_escribo:39
telefono:46 telephone:-37 tell_you:35 ten:-89 tenga:41 tenga__dia:37 tengo_cita:-50 tengo_corte:61 tengo_esa:-52
tengo_que:38 tengo_un:42 text:40 text_list:51 textear:-39 texted:63 texting_me:-44 textos:-52 textos_$:-29 texts:-37
texts_$:-28 th_$:45 th_after:38 th_i:43 than:-57 thanks_$:-41 thanks__the:-39 thanks_but:69 thanks_for:-45 that:67
that_$:-63 that__it:43 that__me:32 that__on:29 that__the:-53 that_appointment:43 that_cost:34 that_one:42
that_ones:-32 that_thing:29 that_time:48 the:164 the__after:-57 the__appointment:72 the__are:48 the__before:-33
the__can:31 the__for:80 the__from:-35 the__i:90 the__just:-32 the__last:29 the__off:-47 the__on:-32 the__thing:178
the__to:53 the__your:44 the_appointment:130 the_back:-43 the_battery:29 the_belt:30 the_brakes:58 the_bulb:-40
the_calendar:45 the_clutch:28 the_day:-41 the_dealer:-30 the_desk:-30 the_garage:-29 the_kid:-28 the_list:-60
the_night:-33 the_one:-30 the_pads:42 the_slot:46 the_texts:-74 the_thursday:114 the_week:-48 the_whole:54
the_wrong:-37 then:-53 there:53 there_$:-63 there__no:37 there_at:-31 there_in:-67 thing:88 thing_$:-58
thing__the:-37 this__a:-32 this__me:-57 this_morning:28 this_thing:-95 this_week:59 three:42 three_times:31
through:40 thurs:-28 thursday:46 thursday_$:45 thursday_morning:-45 tienen:-36 tight:35 til:-108 til_after:36
till:-38 time__i:-53 time__it:-27 time_to:32 tires:-43 tires_$:-35 tmrw:98 tmrw_$:31 to:111 to_$:-37 to__anything:-33
to__else:52 to__in:35 to__late:-28 to__me:-67 to__my:-31 to__next:29 to__off:73 to__on:154 to__out:111 to__over:-33
to__please:-28 to__removed:28 to__so:36 to__sorry:31 to__th:-60 to__that:45 to__the:-31 to__there:49 to__up:44
to_ask:36 to_back:87 to_bail:53 to_call:56 to_change:-124 to_come:138 to_drop:-34 to_get:62 to_go:46 to_hold:37
to_keep:50 to_leave:41 to_make:62 to_move:-32 to_put:-32 to_somebody:65 to_take:-33 to_talk:-43 to_the:-118
to_turn:-49 to_you:-35 to_your:-34 toca:39 todas:28 todavia:-42 today:40 today_$:35 todays:144 todo_$:37 todos:39
tomorrow:52 tomorrow_$:-42 tomorrow__is:57 tomorrow_and:132 tomorrow_it:28 tomorrow_please:66 tomorrows:42 took:-70
took_off:-39 totaled:35 town_$:-43 trabajar:58 trabajo_$:32 traffic:32 tres:35 truck_is:41 tuesday_$:-44
tuesday__you:57 tuesday_and:-88 tuesday_at:-28 tune:-35 tune_up:-35 turn:-56 turn_over:-33 turned_the:-30 turno:90
turno_$:33 turns:38 turns_out:42 twenty:33 twice_today:-31 un:57 un__de:32 un__por:-33 un__y:39 un_mecanico:27
una:-47 una__de:-29 una__no:28 una_troca:28 uncle:-36 undo:181 up:153 up__i:33 up__it:-27 up__the:43 up__to:37
up_and:57 up_at:-79 up_for:-33 up_my:160 up_on:38 up_so:-44 up_when:27 us_off:28 use:41 ustedes_me:53 va:114
va__salir:-44 va__ser:57 va_a:141 vamos:76 vamos_$:70 van_a:27 vemos:-53 vemos_manana:-59 vendi:29 vendimos:-28
vengo:-47 verano:30 verano_$:-28 vino:30 visit:42 volando:-38 voy_$:-97 voy__el:55 voy__estar:-57 voy__hacer:91
voy__ir:-84 voy__me:84 voy__no:-29 voy__tarde:-39 voy_a:-43 voy_el:34 voy_llegando:-33 voy_me:41 voy_tarde:-32
vuelvan:-42 vuelvan_a:-42 vuelvo:69 wait:-76 wait_$:-99 waited:39 waiting:54 waiting_room:39 want__come:61
want_to:-34 was:95 was_my:28 was_the:-27 water:30 we__need:32 we_are:-40 we_do:-29 we_dont:32 wednesday:-69
wednesday_$:-77 wednesdays:102 week:-42 week_$:-30 week_after:-50 weekend:42 weeks_$:31 went__and:46 went_out:45
were__for:37 were__in:51 were_on:-34 what__i:-54 what__it:58 what_am:-36 what_it:35 what_would:52 whatever:72
when_i:-45 when_school:27 when_the:51 while:44 who__are:-28 who__it:41 who_you:-28 whole:40 whole_thing:42 why_$:35
why_not:-51 will__be:90 will__make:-27 will__there:-46 will_be:-69 will_it:-36 will_not:79 wipe:50 wipe_my:50 wish:52
wish_to:52 with:-32 with__and:-37 with__price:-32 with_somebody:-43 with_the:-39 with_you:-29 wont:40 wont__into:28
wont__there:161 wont_be:152 wont_make:87 word:-27 word_$:-27 work:-92 work_for:-32 worries:-36 worrying:39
would__the:29 would_you:57 wrong:-84 wrong_person:-28 y:95 y_$:-126 y__el:-66 y__en:37 y__es:36 y__la:-31
y__precio:-39 y__tengo:57 y_cuanto:38 y_estoy:30 y_las:34 y_lo:30 y_no:59 y_nos:-30 y_que:-28 ya:-124 ya_$:-96
ya__hace:42 ya__la:59 ya__llego:39 ya__no:27 ya__puse:38 ya__que:27 ya__quiero:50 ya__tengo:-93 ya__todo:-37
ya__voy:154 ya_casi:-31 ya_me:56 ya_no:188 ya_quedo:38 ya_voy:-188 ye:-55 yeah:40 years:30 years_$:30 yep:-37
yes:-153 yes_im:-108 yesterday:45 yo__de:-45 yo__digo:33 yo_el:-44 yo_les:53 yo_mismo:33 yo_no:-76 you:31 you__a:46
you__at:63 you__for:42 you__give:80 you__me:-66 you__no:-33 you__to:32 you_and:-28 you_are:-51 you_can:103
you_have:-36 you_lost:48 you_on:38 you_tomorrow:-41 youll:53
"""
