"""What speaks for and against `symptom`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "symptom"
BIAS = -135
WEIGHTS = """\
#abad:-28 #abaj:80 #abel:53 #abin:14 #abla:-30 #abou:27 #abra:-16 #abri:-40 #abro:121 #acab:-22 #acat:-28 #acce:23
#aced:-69 #acei:52 #acel:77 #acen:-64 #acer:-22 #ache:28 #acho:43 #acia:28 #acie:42 #acin:26 #acio:37 #acki:22
#acto:-16 #adas:-31 #adea:32 #adec:-64 #adel:-102 #aden:38 #adez:-15 #adia:40 #adli:96 #ador:-17 #ados:-26 #adre:-20
#affi:-16 #affo:-19 #afte:32 #agar:82 #agen:-18 #agra:-91 #agua:213 #aguj:18 #ahea:-41 #aigh:-15 #aigo:20 #ailp:43
#aini:26 #airb:61 #aire:39 #ajar:18 #ajes:-14 #akes:214 #akin:84 #alan:43 #alar:-48 #alat:-14 #aldr:19 #aled:-14
#alen:85 #ales:71 #algo:79 #alie:30 #alir:16 #alki:-18 #alla:20 #alli:44 #allo:59 #ally:26 #almo:28 #alon:73
#alre:-49 #also:75 #alta:-15 #alte:23 #alto:48 #amad:-17 #aman:44 #amat:52 #ambe:33 #amin:24 #amos:-66 #anan:20
#anas:-19 #anca:71 #ance:-56 #anci:15 #anco:81 #anda:108 #ande:-91 #ando:182 #anec:43 #aner:-18 #ange:-52 #angi:52
#anic:43 #anks:60 #anni:-16 #anot:-19 #ansm:-25 #anta:31 #anti:48 #anto:-30 #anym:21 #anyt:-45 #apag:113 #apar:-73
#apen:44 #aper:-20 #apor:38 #appr:-16 #aque:-18 #aqui:-62 #arab:-47 #arad:-16 #arag:47 #arca:-24 #arch:88 #arco:24
#arel:40 #arga:44 #arge:14 #argo:24 #aril:19 #ario:-15 #arks:48 #arle:20 #arlo:14 #arly:41 #arma:-14 #arni:-108
#aron:-107 #aros:47 #arpa:32 #arqu:-17 #arra:165 #arre:-20 #arte:16 #arts:-75 #asad:-31 #asar:85 #asca:53 #aser:15
#ashb:39 #ashi:31 #asol:14 #asta:15 #asti:28 #astr:32 #atal:26 #atar:-14 #atbe:58 #atch:69 #ated:-21 #atel:93
#ates:78 #atin:68 #ator:16 #atro:-28 #atte:27 #attl:-14 #atul:-23 #auge:18 #aunq:56 #aust:40 #avad:-35 #aven:-31
#avia:-19 #away:82 #ayar:-17 #aybe:-14 #ayed:24 #ayer:56 #baby:-15 #bach:27 #bado:-42 #baja:-83 #baje:25 #bajo:149
#ball:90 #bank:-20 #bare:40 #bata:19 #bbin:24 #bble:66 #been:45 #befo:21 #belo:17 #belt:44 #best:-16 #bett:-38
#biar:-55 #bica:-42 #bida:56 #bido:32 #biem:-64 #bike:-58 #bill:-43 #bing:38 #bios:130 #blac:46 #blam:-20 #blan:44
#blar:19 #bler:20 #bles:53 #blew:32 #blin:128 #blow:46 #boar:37 #body:-14 #bomb:43 #book:-52 #boom:38 #borr:54
#bota:25 #both:55 #boug:-22 #bout:20 #brak:98 #bran:39 #brat:84 #brea:-57 #bren:-14 #brin:23 #bris:-47 #brok:105
#bsup:-14 #buen:-29 #bump:66 #burn:50 #butt:-16 #buzz:39 #cabe:46 #cabi:14 #cada:75 #cade:14 #cado:-28 #cale:84
#cali:38 #call:-56 #camb:-65 #came:35 #cami:25 #camp:21 #canc:-41 #cand:21 #cape:18 #carg:53 #carr:70 #cart:17
#casa:-69 #casc:53 #casi:61 #caso:-19 #catc:71 #cati:-36 #ccel:25 #ccid:-19 #ceit:52 #cele:108 #cell:-18 #cesi:-20
#chad:25 #chai:18 #chan:-41 #char:45 #chec:29 #ched:-32 #chem:-26 #cher:34 #ches:47 #chis:82 #chor:31 #chun:21
#cias:-31 #ciat:-17 #cida:72 #cide:-15 #cien:27 #cier:-20 #ciga:-23 #cing:33 #cino:15 #cion:37 #cita:-45 #cito:-18
#ckin:62 #clam:57 #clic:26 #clie:-20 #clos:-18 #clun:61 #clut:21 #cobr:-20 #coch:34 #coff:56 #cofr:23 #cold:52
#colo:27 #come:-61 #comi:-16 #como:130 #comp:-75 #cond:62 #conf:-42 #cong:26 #cont:-65 #cool:43 #corr:18 #cosa:17
#cost:16 #coug:21 #coul:-20 #coun:-14 #cove:-50 #cran:103 #crat:-51 #craz:43 #crib:-24 #croo:23 #ctio:18 #ctor:-16
#ctri:29 #cuad:17 #cual:-57 #cuer:-16 #cues:43 #curv:27 #cust:-14 #dame:-23 #dang:-22 #dash:59 #date:-17 #dded:15
#ddle:57 #dead:28 #deal:-43 #deba:52 #dece:-65 #deja:33 #deje:-19 #dela:-104 #deme:-37 #dena:15 #dere:21 #dern:15
#ders:28 #desd:57 #desk:-24 #dewa:30 #dezc:-15 #diad:23 #diat:26 #dice:54 #dida:-50 #didn:20 #dido:-50 #died:86
#dier:-65 #diga:-17 #digo:-24 #dill:14 #dimo:-35 #ding:59 #dire:-14 #dirt:-30 #disa:19 #dist:20 #divo:-18 #dlig:104
#does:80 #doin:-19 #done:-51 #dont:41 #door:-168 #dora:-29 #doub:21 #down:110 #drea:-49 #dria:15 #driv:68 #drop:63
#dshi:17 #dulc:23 #duri:32 #duro:-33 #eadl:118 #eads:41 #eady:-59 #eaks:-86 #eall:25 #eams:41 #eand:66 #eans:17
#eard:43 #earl:59 #ears:24 #ease:-24 #eati:38 #eave:-18 #ebaj:52 #ecal:46 #echa:46 #ecia:-16 #ecin:14 #econ:59
#ecor:-19 #ecto:-22 #ectr:29 #edal:142 #edan:-16 #edde:15 #edes:-26 #edge:16 #edin:28 #edle:53 #eedi:28 #eedl:53
#eels:71 #eeps:83 #eeri:117 #eewa:17 #efon:-18 #efor:21 #egad:89 #egar:-18 #egla:-31 #egro:50 #egur:-19 #eird:23
#eite:52 #eith:-21 #ejar:56 #ejen:-20 #ejor:-99 #elan:-56 #elea:52 #elec:26 #elef:-18 #eler:97 #elle:-17 #ells:37
#eloc:75 #else:-19 #elta:37 #emad:44 #embl:62 #emin:-38 #emos:-66 #empe:36 #empo:-26 #empt:54 #enan:18 #enar:97
#enas:45 #ence:46 #enda:-25 #ende:120 #endi:-180 #endo:53 #ends:-14 #enen:-48 #enev:-20 #enfr:59 #engi:105 #engo:38
#enla:-14 #enme:-25 #enor:18 #enos:-70 #ensa:-26 #ense:14 #ensi:22 #enso:21 #enta:74 #ente:103 #enti:-14 #entr:112
#epai:-15 #epla:-57 #epor:-31 #equi:-30 #erad:17 #eran:-19 #erat:42 #erce:17 #erde:131 #erdi:-37 #erdo:-17 #erec:27
#ered:-57 #eres:-36 #erfe:-53 #erhe:55 #eria:15 #erin:130 #erks:30 #erma:-16 #ermi:-18 #ermo:32 #erna:28 #erni:14
#erro:18 #ersa:74 #erse:85 #erso:-15 #erte:14 #ervi:74 #erza:69 #esca:24 #esco:-20 #escu:80 #esde:57 #esio:52
#esnt:78 #espe:-49 #espo:34 #essa:-23 #essu:48 #esta:58 #este:-25 #esto:-79 #etal:131 #eter:31 #ethi:26 #etim:27
#etra:50 #etro:41 #ette:-44 #etti:19 #eutr:21 #evas:-56 #ever:120 #eves:-24 #evis:-15 #ewal:29 #eway:98 #ewhe:-16
#excl:62 #exha:40 #exit:18 #expl:-20 #exti:-24 #exts:-44 #eyes:19 #ezco:-16 #falt:-21 #faro:32 #fast:30 #fect:-54
#feel:103 #fell:-34 #ffee:56 #ffic:-24 #ffor:-19 #fier:15 #fije:14 #fill:52 #filt:-18 #fine:-29 #fing:29 #fire:-20
#firm:-21 #firs:-50 #fixe:-104 #flas:23 #flat:23 #flic:18 #flui:-61 #flus:-52 #foco:-61 #foll:23 #fond:18 #fono:-16
#foqu:41 #ford:-19 #fore:41 #form:-16 #foun:46 #fren:318 #frid:-24 #frie:56 #frio:39 #from:67 #fter:65 #fuer:60
#fuga:45 #fuse:52 #gado:106 #game:-24 #gana:-45 #gara:48 #gare:-17 #garo:81 #garr:60 #gaso:14 #gate:45 #gaug:18
#gave:-14 #gear:132 #gela:49 #gets:18 #gett:20 #ghbo:17 #ghts:-14 #ghwa:37 #gimm:-14 #gine:103 #ging:55 #give:20
#glan:-19 #gles:-14 #gnal:32 #goes:60 #goin:63 #golp:77 #goma:38 #gone:-59 #good:-40 #gote:35 #grab:35 #grac:-14
#grad:-103 #grat:-27 #grea:-113 #gree:54 #grin:136 #gual:15 #guan:52 #guja:18 #guna:-62 #gund:24 #gunt:-24 #guro:-19
#gust:-27 #habl:-36 #hace:59 #haci:43 #hada:26 #haha:-37 #hake:-18 #haki:25 #half:14 #hand:40 #hani:47 #hank:-41
#hape:15 #happ:-27 #hard:40 #harm:-19 #hast:23 #haus:40 #have:19 #hboa:39 #hbor:17 #head:65 #hear:85 #heat:60
#heck:25 #heel:58 #help:22 #hene:-20 #hera:34 #herm:-14 #hese:-29 #hich:-91 #hiel:18 #hift:149 #high:56 #hija:-17
#hile:18 #hill:237 #himm:84 #hind:-14 #hine:47 #hing:54 #hink:71 #hisp:63 #hiss:20 #hitc:-14 #hite:16 #hizo:-14
#hock:-20 #hoev:-33 #hold:124 #hole:119 #home:25 #hone:-45 #hops:27 #hora:-43 #hori:-18 #horr:22 #hors:22 #hose:-60
#houg:47 #houl:82 #hour:-35 #hous:-26 #howe:35 #hoyo:18 #hred:15 #hree:76 #hrew:-16 #hrou:45 #huec:26 #huel:97
#huev:29 #humb:-23 #humo:84 #hump:33 #hunk:65 #huts:28 #hway:37 #iapa:-66 #iaro:-43 #ible:21 #ibra:135 #icen:-24
#icio:-14 #icke:14 #icki:18 #icks:45 #icon:66 #idad:58 #iday:-29 #iddl:18 #idea:26 #iden:-21 #ides:39 #idew:30
#idge:-29 #idle:109 #idnt:20 #idos:-96 #ield:15 #iemb:50 #ieme:-17 #iemp:-24 #iend:121 #iene:39 #ient:111 #ierd:121
#iere:91 #iern:-23 #iero:-39 #ierr:20 #ifte:27 #ifts:95 #igar:-23 #ighb:17 #ight:-48 #ighw:37 #igna:32 #igua:20
#igue:53 #ilen:39 #iles:-22 #illa:-28 #illo:28 #ills:99 #ilpi:43 #imad:-19 #imes:45 #imin:-17 #immi:76 #imon:18
#imos:-41 #impi:-98 #inan:16 #inca:46 #ince:-43 #indi:67 #indo:-46 #inds:53 #inea:-17 #iner:-15 #info:-29 #inge:24
#ingu:-160 #inin:42 #iniv:-15 #inke:97 #inks:26 #inne:-16 #inos:47 #insi:21 #insu:-16 #ints:57 #iona:90 #ione:-21
#ions:-29 #iper:-157 #ippi:42 #iqui:-26 #irad:87 #iran:21 #irba:61 #irec:-14 #ired:-16 #ires:-84 #irme:-16 #irri:34
#irst:-50 #irve:17 #isan:-21 #isap:20 #isas:-47 #ises:-15 #isim:25 #isio:-16 #isit:-62 #ismo:20 #isnt:-22 #ispa:60
#isse:19 #issu:-19 #ista:34 #isto:-19 #iter:20 #ithe:-21 #itse:59 #itte:-15 #itti:22 #ittl:32 #ivan:-15 #iver:-46
#ives:-102 #ivew:75 #ivin:34 #ivoc:-24 #ivor:-18 #ixed:-104 #jack:15 #jaja:-62 #jala:21 #jalo:42 #jaro:75 #jerk:33
#jito:14 #join:68 #jueg:49 #juev:-24 #jump:68 #junk:-18 #junt:-24 #just:18 #keep:85 #kers:20 #king:73 #knoc:-14
#lace:-83 #lack:46 #lado:60 #lain:-23 #lama:41 #lamo:-20 #lamp:35 #lanc:92 #lank:23 #lann:-15 #lant:75 #larg:14
#larm:-42 #laro:-22 #lash:18 #latc:57 #lati:-24 #lava:-37 #lave:18 #lder:119 #ldri:19 #leak:-26 #lean:57 #leav:-15
#lect:25 #leep:-20 #lefo:-18 #left:-96 #lega:-20 #lego:-74 #lenc:39 #lend:-21 #lent:91 #lept:-16 #lera:76 #lero:59
#less:-16 #lice:-22 #lick:130 #lida:-15 #lide:41 #lido:14 #lier:-15 #lies:26 #life:-18 #ligh:37 #like:133 #limp:-30
#lind:48 #ling:38 #link:109 #liqu:-28 #list:18 #litt:32 #lkin:-18 #llas:-54 #lleg:-104 #ller:-33 #llet:-17 #llow:81
#lmos:29 #loan:-14 #loca:-14 #loci:75 #loco:-14 #lone:40 #long:17 #look:62 #loor:17 #lora:30 #lose:29 #lost:73
#lowi:33 #lows:82 #lpip:43 #lrea:-49 #lsew:-14 #lter:17 #ltim:-24 #ltos:51 #luce:66 #lueg:-18 #luga:-19 #luid:-61
#lumb:69 #lunk:61 #lush:-52 #lutc:21 #lyin:40 #mach:-26 #made:20 #mado:17 #mage:-14 #maki:52 #mand:-111 #mane:42
#many:-17 #marc:66 #mari:19 #mark:64 #marq:-16 #mart:-29 #mate:-18 #mati:52 #mayb:-14 #mber:-32 #mbia:-72 #mbid:30
#mbie:-22 #mbio:88 #mbla:56 #mbol:32 #mbsu:-14 #mech:47 #medi:-14 #mejo:-104 #mell:60 #meno:-16 #mens:-22 #ment:-34
#mero:-28 #meta:130 #mete:96 #meth:26 #meti:24 #metr:32 #midd:18 #mies:75 #mile:-22 #mill:-34 #mind:-41 #mine:18
#ming:-32 #mini:-16 #misi:-15 #mism:30 #miss:-61 #mmie:75 #mofl:29 #moke:-44 #moki:-93 #mome:23 #mone:-40 #mont:-31
#morn:101 #morr:42 #most:38 #moto:14 #move:-24 #mpad:-16 #mped:19 #mper:24 #mpez:19 #mpia:-105 #mpor:-15 #mpre:-16
#mpus:-14 #much:-102 #muer:20 #must:-17 #myse:-22 #nada:-59 #nail:28 #nale:92 #nana:21 #nand:62 #nato:23 #ncar:22
#ncel:-41 #ncha:37 #ncho:21 #ncie:21 #ncon:-16 #ndan:25 #ndar:-32 #nded:-14 #ndem:-35 #nden:-33 #nder:171 #ndid:-102
#ndim:-28 #ndin:40 #ndio:29 #ndle:-20 #ndow:-39 #ndsh:17 #near:22 #neat:15 #nece:-32 #neci:43 #need:-55 #negr:58
#neig:17 #neut:21 #next:-95 #nfir:-17 #nfor:-26 #nfre:49 #ngan:-16 #ngel:49 #nger:29 #nges:108 #ngin:157 #ngra:-23
#ngun:-165 #nigh:42 #ning:-74 #nino:40 #niva:-15 #nker:95 #nkin:19 #nner:-26 #nnin:16 #nobo:-21 #nock:-14 #nois:-50
#nomb:-17 #nori:19 #norm:38 #nose:23 #noth:21 #nque:75 #nsaj:-22 #nsio:24 #nsmi:-25 #nsor:21 #nsto:-20 #ntan:43
#ntar:-17 #ntas:-142 #nten:-65 #ntes:-21 #ntic:49 #nton:-19 #ntra:118 #ntre:-27 #ntro:21 #ntur:118 #nuev:-108
#numb:-41 #nume:-19 #nymo:21 #nyth:-37 #oard:37 #oast:49 #obbl:78 #obod:-21 #obra:-26 #obre:39 #ocad:-24 #oche:30
#ocid:74 #ocki:22 #ocks:56 #ocup:-26 #oday:89 #odri:18 #oesn:78 #oeve:-34 #offe:56 #ofle:29 #ofre:22 #oiga:26
#oing:44 #oint:100 #oise:-17 #oisy:-33 #oked:25 #oken:63 #okin:-76 #olan:124 #olin:14 #olit:15 #ollo:23 #olor:38
#olpe:77 #ombr:-18 #omen:-14 #omer:-17 #omet:81 #omin:-26 #omor:42 #ompa:-21 #ompl:-14 #ompr:-18 #ompu:-16 #onal:92
#onan:38 #once:-48 #onch:43 #onde:28 #ondo:15 #onea:35 #oney:-37 #onfi:-18 #onge:44 #ongr:-23 #only:-14 #onte:-56
#onth:-19 #onto:15 #ooke:19 #ooks:61 #oola:44 #oone:18 #oose:16 #open:55 #ople:22 #oppe:89 #oqui:49 #orad:-22
#oran:16 #orde:-14 #ores:-41 #orev:20 #orgo:-18 #orks:82 #orma:46 #orme:-27 #orni:104 #orqu:46 #orra:51 #orre:-15
#orri:43 #orro:59 #orry:-57 #orse:49 #orth:-21 #osas:21 #oses:46 #osie:33 #osse:-15 #ossi:20 #oste:29 #osti:47
#otal:-37 #otan:25 #otea:34 #othi:40 #otho:29 #otra:21 #otro:-45 #oubl:22 #oude:-61 #ough:149 #ould:38 #ound:24
#ount:-19 #ours:-21 #ousa:-21 #ouse:-19 #over:125 #owar:50 #owed:26 #ower:101 #owin:44 #pade:32 #padr:-16 #pads:-52
#paga:69 #pago:21 #paid:-15 #pair:-15 #pala:34 #pape:-19 #para:-44 #pare:23 #park:185 #paro:18 #parp:32 #part:-38
#pasa:60 #paso:35 #past:39 #pati:19 #peak:-19 #pect:-14 #peda:141 #peed:86 #pega:67 #pena:39 #pend:-17 #perd:-55
#perf:-53 #pero:147 #pers:-125 #pete:44 #phil:69 #phon:-55 #piap:-66 #pick:-19 #pier:97 #pila:60 #ping:107 #pink:31
#pint:-14 #pipe:43 #plac:-82 #plai:-22 #plan:-104 #plas:35 #podr:15 #poin:32 #pole:41 #ponc:43 #pond:22 #pone:-22
#popp:44 #porq:46 #port:-42 #poth:29 #powe:114 #pped:84 #ppen:-19 #ppin:60 #prec:-48 #preg:-24 #pren:135 #pres:115
#pret:22 #pric:-71 #prin:-14 #pron:18 #pudd:42 #puen:17 #pull:-62 #pump:70 #puse:-15 #quea:-62 #qued:-119 #quem:36
#quic:-15 #quid:-27 #quie:34 #quis:77 #quit:-20 #quiv:-26 #raba:-44 #rabr:-47 #raci:24 #ract:44 #rada:57 #rade:-100
#radi:22 #raff:-15 #rage:46 #rail:57 #rain:80 #rake:87 #rall:14 #ramp:39 #ranc:61 #rand:21 #rank:103 #rant:-15
#raro:36 #rast:29 #ratc:-51 #rate:62 #rati:37 #rato:-34 #ratt:-14 #raya:-20 #raye:29 #razy:43 #rbag:57 #rcha:105
#rcio:-16 #rday:-17 #rden:-14 #rdon:-17 #read:-19 #reak:-57 #real:55 #ream:-57 #rear:59 #reas:-25 #reat:-84 #reca:80
#rech:34 #reci:-59 #reco:-33 #redd:15 #reen:55 #reet:36 #reew:17 #refu:19 #rega:52 #regl:-42 #regu:-19 #rely:40
#remi:-85 #rena:185 #rend:131 #reno:76 #rent:26 #repl:-59 #repo:-45 #rese:-24 #resi:52 #ress:75 #rest:-36 #rete:20
#retr:50 #reve:167 #revi:-16 #rfec:-53 #rgot:-18 #rhea:55 #rice:-72 #rida:-28 #ride:-41 #ridg:-29 #rido:30 #rien:117
#ries:16 #righ:-128 #rill:33 #rinc:58 #rind:136 #ring:101 #rint:-18 #ripp:22 #risa:-47 #risi:30 #rite:-26 #rive:17
#rivi:41 #rmal:38 #rman:-16 #rmin:-21 #rmom:35 #rnea:15 #rnes:-22 #rnig:14 #rnin:53 #road:-30 #roba:-24 #roca:-34
#rock:77 #roja:23 #rojo:34 #roke:105 #roll:20 #rong:-26 #rook:23 #ropp:29 #rops:60 #rose:-23 #rota:-24 #roug:112
#rpad:32 #rque:28 #rran:63 #rras:30 #rreg:-42 #rren:-19 #rret:23 #rrie:47 #rrin:22 #rros:-19 #rsda:-24 #rson:-15
#rted:27 #rter:33 #rtes:-37 #rtie:-24 #ruck:53 #rude:-15 #rued:37 #ruen:54 #rumb:21 #runn:30 #runs:-24 #rush:20
#rust:31 #rven:18 #rwar:63 #saba:-28 #sabe:-14 #saca:17 #sada:-30 #sado:-20 #safe:-14 #said:-49 #saje:-20 #sala:-14
#sald:19 #sale:117 #same:-23 #sand:-23 #sapp:20 #saqu:-15 #says:54 #scab:53 #scap:18 #scom:-15 #scra:-53 #scri:-25
#sday:-29 #seas:-26 #seat:96 #seco:71 #seda:-18 #segu:19 #self:32 #sema:14 #send:-42 #seno:27 #sens:21 #sent:-15
#sera:17 #seri:22 #serv:88 #sewh:-14 #shap:15 #shbo:39 #shes:19 #shie:27 #shif:149 #shim:84 #shin:47 #shoc:-20
#shop:-46 #shou:80 #show:31 #shre:15 #shut:108 #sibl:16 #side:67 #sien:70 #sign:49 #sigu:57 #sile:39 #sima:16
#sinc:-18 #sing:33 #sion:44 #sirv:16 #sito:-17 #skip:-31 #slee:-20 #slep:-16 #slic:80 #slid:68 #slip:41 #slow:33
#smel:60 #smis:-25 #smok:-137 #sobr:51 #soft:25 #sola:28 #sold:-35 #soli:24 #solo:39 #some:24 #sona:17 #sorr:-57
#soun:-28 #spar:56 #spas:59 #spea:-19 #spec:-19 #spee:86 #sper:-32 #spet:-14 #spit:19 #spon:26 #spre:16 #sque:-81
#squi:29 #sses:-16 #ssib:20 #ssin:15 #ssio:-16 #ssue:-19 #ssur:48 #stac:55 #stal:65 #stan:-58 #star:-55 #stas:25
#stay:59 #stea:35 #stee:113 #step:67 #ster:30 #stic:77 #stil:24 #stim:-21 #stom:-30 #stop:46 #stor:15 #stoy:-58
#stre:44 #stuf:43 #sube:45 #subi:56 #supe:21 #sure:26 #susp:24 #symb:31 #tabl:19 #taci:55 #tail:127 #take:31
#tale:-26 #talk:-43 #tall:89 #tamb:58 #tame:-14 #tand:57 #taro:-20 #tart:-41 #team:29 #tear:20 #tede:-26 #teer:117
#tele:-20 #tely:102 #temp:106 #teng:23 #tent:-52 #tera:14 #tere:-20 #tern:27 #ters:56 #test:34 #text:-106 #than:-83
#them:-27 #ther:37 #thes:-29 #they:-67 #thin:34 #this:-15 #thol:29 #thos:-72 #thou:21 #thre:71 #thro:47 #tick:28
#tico:42 #tiem:34 #tier:-23 #tigh:30 #till:-16 #tima:-39 #time:28 #timi:-15 #timo:17 #tina:16 #ting:75 #tion:23
#tira:146 #tire:-28 #tito:-18 #toda:105 #todo:-57 #told:21 #toma:-35 #tomo:40 #topa:-18 #tope:58 #tops:31 #tora:-29
#tore:16 #torm:18 #tory:-20 #tosi:33 #tota:-37 #towa:50 #trab:-38 #trac:86 #trad:-22 #trae:114 #trai:50 #tral:21
#tran:114 #trar:54 #trat:-15 #trea:-22 #tree:41 #treg:-16 #tric:28 #trip:-26 #troc:-34 #tron:21 #truc:53 #true:53
#tsel:59 #tter:-65 #ttin:32 #ttle:31 #tues:23 #tuff:43 #tula:-26 #ture:16 #turn:192 #tuvi:60 #twic:69 #uand:52
#ubic:-42 #ubid:56 #uble:22 #uces:31 #ucho:31 #ucks:14 #udde:19 #uddl:42 #uder:-61 #ueak:-124 #ueal:44 #ueco:23
#ueda:30 #uede:-26 #uedo:-86 #uego:36 #uele:91 #uelo:20 #uelt:36 #uema:55 #uena:51 #ueno:-21 #uera:-18 #uerd:-16
#uert:18 #uerz:69 #uesd:-15 #uest:38 #uete:26 #ueva:-79 #ueve:-15 #ugar:-19 #ught:-15 #uick:-15 #uidi:18 #uido:-49
#uien:-25 #uier:78 #uiso:50 #uita:39 #uito:56 #uivo:-26 #ulat:-16 #ulce:23 #ulde:101 #ulle:-68 #ulls:54 #ulsa:14
#ulti:-24 #umbe:-55 #umbi:30 #umbr:88 #umbs:-23 #umer:-20 #umpe:26 #umps:61 #unda:30 #unde:131 #unds:-82 #unni:30
#unqu:56 #unst:-19 #unta:-35 #unti:-17 #uper:20 #uphi:69 #urni:60 #urns:131 #urnt:14 #ursd:-24 #urva:26 #usad:-27
#usan:-41 #ushi:29 #uspe:24 #uste:-43 #usto:-44 #utch:21 #utra:21 #utte:-18 #uvie:60 #vaca:-35 #vaci:34 #vado:-34
#vale:-15 #vapo:38 #vece:40 #velo:75 #vend:-117 #vent:25 #vere:-57 #verh:55 #vern:14 #vers:89 #very:24 #vewa:75
#vibr:135 #viej:18 #vien:29 #vier:33 #ving:16 #visa:-17 #visi:-63 #voca:-24 #vola:80 #vorc:-18 #vuel:27 #wall:73
#ward:113 #warn:-108 #wash:17 #wasn:-19 #wate:41 #weir:23 #went:148 #were:-72 #what:-118 #whee:58 #when:96 #wher:22
#whic:-97 #whil:18 #whin:60 #whit:16 #whoe:-33 #whol:91 #wice:69 #wild:-27 #will:-98 #wind:-23 #wing:44 #wipe:-170
#wire:67 #with:-91 #wobb:78 #wont:49 #work:26 #wors:42 #wort:-17 #woul:-24 #writ:-25 #wron:-29 #xcla:62 #xhau:40
#xtin:-23 #yaro:-17 #yeah:-57 #year:-30 #ying:28 #ymbo:31 #ymor:21 #your:-144 #ysel:-22 #ythi:-42 #zero:23 #zumb:36
%again_later%away:-27 %again_later%bad:-19 %again_later%busy:-41 %again_later%car:-26 %again_later%car_part:115
%again_later%doubt:15 %again_later%elsewhere:-37 %again_later%fails:98 %again_later%family:-31
%again_later%gone_car:51 %again_later%leak:40 %again_later%leave_me:66 %again_later%lift:-28 %again_later%message:-48
%again_later%noise:153 %again_later%odometer:-21 %again_later%pay_day:-31 %again_later%phone:48 %again_later%place:19
%again_later%question:-34 %again_later%refuse:57 %again_later%season:-70 %again_later%shake:65
%again_later%shift_it:-83 %again_later%smoke_smell:60 %again_later%start_again:67 %again_later%thanks:15 %agree:-120
%agree%away:56 %agree%bad:65 %agree%bring:-64 %agree%car:-17 %agree%doubt:-57 %agree%elsewhere:52 %agree%fails:20
%agree%family:-24 %agree%leak:38 %agree%machine:20 %agree%message:-19 %agree%money:71 %agree%noise:49
%agree%odometer:-15 %agree%on_way:67 %agree%opening:-14 %agree%phone:16 %agree%place:59 %agree%question:116
%agree%refuse:-26 %agree%shake:120 %agree%smoke_smell:120 %agree%thanks:-41 %agree%wrong_one:30 %away:-74
%away%bad:37 %away%busy:-58 %away%call_off:-20 %away%car_part:106 %away%gone_car:-18 %away%how_long:-17 %away%leak:16
%away%leave_me:-27 %away%money:25 %away%noise:69 %away%on_way:-22 %away%place:-25 %away%question:-34 %away%refuse:-42
%away%shift_it:15 %away%smoke_smell:28 %bad:-54 %bad%call_off:-31 %bad%car:-31 %bad%car_part:-39 %bad%leak:55
%bad%machine:35 %bad%meaning:48 %bad%money:15 %bad%noise:39 %bad%pay_day:-26 %bad%shake:59 %bad%staff:-36 %bring:-106
%bring%busy:-20 %bring%call_off:51 %bring%car:36 %bring%car_part:112 %bring%elsewhere:-23 %bring%fails:19
%bring%gone_car:20 %bring%how_long:22 %bring%leave_me:86 %bring%lift:23 %bring%message:-28 %bring%money:-18
%bring%on_way:53 %bring%place:82 %bring%question:144 %bring%refuse:17 %bring%smoke_smell:31 %bring%staff:-17
%bring%start_again:28 %busy:-44 %busy%call_off:-49 %busy%car:-14 %busy%car_part:-15 %busy%fails:-42 %busy%noise:30
%busy%question:37 %busy%refuse:-49 %busy%shift_it:21 %busy%smoke_smell:-16 %busy%wrong_one:19 %call_off%car:44
%call_off%car_part:18 %call_off%do_it:72 %call_off%elsewhere:-37 %call_off%fails:-109 %call_off%how_long:75
%call_off%leak:-39 %call_off%leave_me:108 %call_off%meaning:33 %call_off%message:-64 %call_off%money:64
%call_off%odometer:-103 %call_off%on_way:26 %call_off%pay_day:21 %call_off%phone:67 %call_off%place:53
%call_off%question:-14 %call_off%refuse:58 %call_off%shift_it:21 %call_off%staff:-37 %call_off%start_again:32
%call_off%thanks:31 %call_off%who:-27 %call_off%wrong_one:-21 %car:102 %car%car_part:60 %car%elsewhere:-36
%car%fails:234 %car%gone_car:-102 %car%leave_me:65 %car%lift:-71 %car%noise:123 %car%on_way:22 %car%pay_day:35
%car%phone:20 %car%place:26 %car%question:15 %car%refuse:-15 %car%season:-22 %car%shake:85 %car%shift_it:59
%car%smoke_smell:70 %car%start_again:34 %car%thanks:-31 %car%who:-19 %car%wrong_one:-100 %car_part:483
%car_part%do_it:-212 %car_part%doubt:60 %car_part%elsewhere:-20 %car_part%fails:36 %car_part%family:-82
%car_part%how_long:94 %car_part%leak:71 %car_part%leave_me:193 %car_part%machine:51 %car_part%meaning:18
%car_part%message:-15 %car_part%money:-55 %car_part%noise:-155 %car_part%odometer:75 %car_part%on_way:125
%car_part%opening:73 %car_part%phone:77 %car_part%place:117 %car_part%question:-16 %car_part%refuse:35
%car_part%shake:174 %car_part%shift_it:-34 %car_part%smoke_smell:177 %car_part%staff:-75 %car_part%start_again:67
%car_part%thanks:-17 %car_part%who:-28 %do_it:-210 %do_it%doubt:32 %do_it%fails:19 %do_it%family:-19
%do_it%gone_car:-60 %do_it%how_long:17 %do_it%leak:85 %do_it%leave_me:17 %do_it%money:24 %do_it%on_way:41
%do_it%place:-15 %do_it%question:50 %do_it%refuse:75 %do_it%season:-31 %do_it%shift_it:27 %do_it%smoke_smell:20
%do_it%staff:-26 %do_it%start_again:42 %do_it%thanks:-21 %do_it%wrong_one:-51 %doubt:36 %doubt%elsewhere:44
%doubt%noise:29 %doubt%odometer:-23 %doubt%on_way:62 %doubt%shift_it:24 %doubt%wrong_one:26 %elsewhere:-69
%elsewhere%fails:84 %elsewhere%lift:-29 %elsewhere%on_way:33 %elsewhere%place:64 %elsewhere%refuse:-58
%elsewhere%season:-25 %elsewhere%shift_it:-39 %elsewhere%smoke_smell:-23 %elsewhere%start_again:15 %fails:483
%fails%gone_car:115 %fails%how_long:60 %fails%leak:38 %fails%leave_me:-136 %fails%meaning:19 %fails%message:-23
%fails%money:-15 %fails%on_way:48 %fails%pay_day:14 %fails%phone:15 %fails%place:90 %fails%question:20
%fails%refuse:61 %fails%season:-23 %fails%shake:-36 %fails%shift_it:-15 %fails%smoke_smell:-67 %fails%staff:18
%fails%who:-54 %fails%wrong_one:161 %family:-103 %family%gone_car:-30 %family%leak:23 %family%leave_me:15
%family%meaning:-19 %family%odometer:-93 %family%on_way:21 %family%place:20 %family%question:16 %family%staff:74
%family%wrong_one:15 %gone_car:-228 %gone_car%leave_me:50 %gone_car%money:-21 %gone_car%phone:-14
%gone_car%question:-15 %gone_car%refuse:16 %gone_car%season:-16 %gone_car%shift_it:-32 %gone_car%start_again:42
%gone_car%thanks:-26 %gone_car%wrong_one:-40 %how_long:-48 %how_long%lift:-15 %how_long%noise:49
%how_long%odometer:-16 %how_long%on_way:-26 %how_long%opening:-26 %how_long%question:-49 %how_long%start_again:29
%how_long%who:-24 %leak:303 %leak%money:40 %leak%odometer:-18 %leak%on_way:63 %leak%question:81 %leak%refuse:-86
%leak%smoke_smell:-21 %leak%staff:-23 %leak%start_again:19 %leak%thanks:-24 %leak%wrong_one:-29 %leave_me:-103
%leave_me%message:-71 %leave_me%noise:32 %leave_me%on_way:27 %leave_me%phone:39 %leave_me%place:41
%leave_me%question:60 %leave_me%refuse:34 %leave_me%season:-47 %leave_me%shift_it:-27 %leave_me%smoke_smell:-69
%leave_me%start_again:44 %leave_me%wrong_one:24 %lift:-72 %lift%noise:16 %lift%on_way:21 %lift%place:47
%lift%refuse:-40 %lift%shift_it:-16 %machine:33 %machine%meaning:39 %machine%shake:46 %machine%wrong_one:38
%meaning%money:17 %meaning%odometer:-19 %meaning%phone:26 %meaning%place:16 %meaning%question:-30 %meaning%refuse:52
%meaning%shake:49 %meaning%staff:17 %message:-197 %message%place:-23 %message%question:-20 %message%refuse:-24
%message%start_again:-56 %money:-153 %money%noise:84 %money%odometer:15 %money%on_way:15 %money%place:-18
%money%question:-28 %money%refuse:38 %money%shift_it:-21 %money%smoke_smell:75 %money%wrong_one:-15 %noise:563
%noise%odometer:70 %noise%on_way:81 %noise%pay_day:25 %noise%phone:37 %noise%place:74 %noise%question:255
%noise%refuse:97 %noise%shake:-24 %noise%shift_it:87 %noise%smoke_smell:-43 %noise%staff:37 %noise%start_again:109
%noise%wrong_one:106 %odometer:-68 %odometer%on_way:21 %odometer%place:66 %odometer%question:-36 %odometer%refuse:-48
%odometer%shift_it:-32 %odometer%smoke_smell:14 %on_way:-58 %on_way%question:83 %on_way%refuse:-26 %on_way%shake:41
%on_way%shift_it:14 %on_way%staff:43 %on_way%start_again:43 %on_way%wrong_one:19 %opening:-15 %opening%shift_it:-17
%pay_day:-75 %pay_day%question:-27 %pay_day%refuse:19 %pay_day%season:-28 %phone:-64 %phone%place:40
%phone%question:-47 %phone%shift_it:-19 %phone%smoke_smell:14 %phone%start_again:48 %phone%who:-27 %place:35
%place%question:64 %place%refuse:26 %place%smoke_smell:-33 %place%who:-30 %place%wrong_one:29 %question:-141
%question%refuse:35 %question%shake:158 %question%shift_it:86 %question%smoke_smell:67 %question%start_again:-66
%question%thanks:14 %question%who:-83 %question%wrong_one:-23 %refuse:-109 %refuse%shake:-35 %refuse%shift_it:43
%refuse%smoke_smell:-30 %refuse%start_again:69 %refuse%thanks:-17 %refuse%wrong_one:62 %season:-122
%season%shift_it:-29 %season%smoke_smell:-43 %shake:472 %shake%start_again:23 %shift_it:28 %shift_it%smoke_smell:20
%shift_it%start_again:-15 %smoke_smell:504 %smoke_smell%start_again:15 %smoke_smell%thanks:-16 %smoke_smell%who:-20
%staff:-78 %staff%wrong_one:-15 %start_again:-52 %thanks:-133 %who:-160 %wrong_one:-160 @?:-214 @after_visit:50
@car:-117 @confirm_stop:-92 @later:-117 @nothing:59 @odometer:-15 @offers:-106 @reading:-172 @time:-75 @times:-159
@walk_in:-55 ^_$:-25 ^_a:-88 ^_airbag:45 ^_al:29 ^_all:-22 ^_anda:77 ^_ando:-65 ^_aqui:-15 ^_asi:-15 ^_ay:28
^_baja:-92 ^_ballpark:14 ^_battery:37 ^_been:-19 ^_both:36 ^_brakes:26 ^_cada:26 ^_can:-130 ^_cancel:-14 ^_cant:30
^_car:204 ^_como:-40 ^_congratulations:-23 ^_coolant:44 ^_cost:-16 ^_could:-21 ^_cual:-25 ^_cuando:-103 ^_cuanto:-41
^_dale:14 ^_de:-46 ^_desde:20 ^_dice:33 ^_did:-15 ^_do:-58 ^_does:-17 ^_doesnt:-14 ^_donde:-66 ^_el:157 ^_en:-44
^_engine:18 ^_esta:18 ^_estan:-16 ^_estoy:-47 ^_fire:-30 ^_flat:-33 ^_found:63 ^_front:-18 ^_go:-27 ^_going:-50
^_hace:53 ^_hay:62 ^_headlights:30 ^_heard:39 ^_hey:-20 ^_hit:-118 ^_how:-148 ^_hoy:41 ^_huele:54 ^_i:-139 ^_id:-42
^_if:-50 ^_ill:-63 ^_im:-93 ^_info:-20 ^_is:-226 ^_it:122 ^_just:-82 ^_la:119 ^_las:100 ^_le:156 ^_left:-21 ^_let:-25
^_llamenme:14 ^_lo:-34 ^_lol:-15 ^_lost:92 ^_loud:25 ^_mande:-31 ^_mas:-73 ^_miercoles:16 ^_morning:-14 ^_my:82
^_need:15 ^_never:-24 ^_new:-24 ^_no:-39 ^_not:-68 ^_on:-86 ^_one:46 ^_only:-14 ^_para:-30 ^_pedal:22 ^_pink:30
^_please:-14 ^_por:-21 ^_power:14 ^_precio:-18 ^_puede:15 ^_puro:18 ^_que:-142 ^_quede:-63 ^_quedo:-38 ^_quit:-88
^_rear:53 ^_running:43 ^_se:-54 ^_second:21 ^_shake:-51 ^_she:25 ^_shes:16 ^_si:28 ^_siento:14 ^_smells:24
^_smoke:-43 ^_sold:-14 ^_something:-17 ^_sorry:-18 ^_sounds:-84 ^_start:-160 ^_steering:39 ^_still:-60 ^_stop:-118
^_stuck:-57 ^_su:-29 ^_suena:-36 ^_sure:-24 ^_takes:29 ^_temp:19 ^_tengo:34 ^_thanks:-21 ^_that:-15 ^_the:96
^_there:115 ^_they:-46 ^_this:-32 ^_thumbsup:-14 ^_thursday:32 ^_tiembla:53 ^_tiene:87 ^_tienen:-31 ^_tire:72
^_todo:-81 ^_too:-22 ^_took:26 ^_trae:149 ^_traffic:-24 ^_traigo:23 ^_turn:17 ^_una:22 ^_ustedes:-14 ^_uy:15 ^_va:-17
^_we:-48 ^_were:-20 ^_what:-152 ^_wheel:18 ^_when:-116 ^_whenever:-22 ^_where:-26 ^_which:-84 ^_white:20 ^_who:-20
^_whole:69 ^_why:-32 ^_will:-51 ^_wont:-44 ^_would:-16 ^_y:-59 ^_ya:-88 ^_yeah:-37 ^_yes:66 ^_yo:-14 ^_you:-134
^_your:-41 a:132 a__and:103 a__at:17 a__book:-29 a__can:27 a__cuando:14 a__de:-23 a__for:-19 a__hora:-16 a__in:103
a__is:22 a__later:-14 a__mil:-18 a__noise:24 a__now:-33 a__on:48 a__out:-30 a__over:17 a__quemado:21 a__si:17
a__sound:38 a__that:14 a__thing:-14 a__tire:-43 a__when:16 a__with:34 a__y:-21 a_bit:38 a_como:-64 a_flat:19
a_hacer:-17 a_half:-14 a_la:26 a_las:-72 a_little:14 a_mi:-53 a_nail:19 a_new:14 a_pothole:29 a_price:-14
a_quemado:23 a_ride:-26 a_rip:23 abajo:132 abajo_$:92 able:-29 able__make:-14 able_to:-29 about:25 about_it:-15
about_oil:-14 about_the:-21 about_to:78 ac:-15 accident:-19 aceite:36 acelerador:34 acelero:21 adelante:-99
adelante_$:-97 adentro:23 afford:-19 afford_it:-18 after:34 after_$:-20 after__park:16 after_a:24 after_all:-16
after_i:48 after_the:-15 after_you:19 again_$:-80 again__i:20 agarra:60 agradece:-63 agradece_$:-45 agradezco:-15
agua:162 agua_$:103 agua__el:-22 aguanta:53 aguja:18 ahead:-41 ahead_and:-26 ahi:-22 air:68 airbag:61 aire:39
aire_$:14 al:92 al__el:14 al_arrancar:17 al_cien:-31 al_frenar:44 al_rato:-28 alarm:-23 algo:90 all:53 all_$:-38
all__on:32 all__the:37 all__way:63 all_good:-47 all_over:48 all_the:63 alla:-20 almost:29 along:43 already:-49
already_$:-24 also:75 am_i:-16 amanecio:43 amarilla:18 amber:33 an:-44 and:246 and__a:-16 and__doesnt:-30
and__dont:45 and__is:37 and__it:23 and__like:-20 and__my:-16 and_a:-17 and_did:-16 and_i:49 and_im:17 and_it:87
and_now:83 and_out:-15 and_the:100 and_then:28 anda:122 andan:28 ando:-101 ando_en:-28 ano:-15 another:-19
anticongelante:49 anticongelante_$:52 any_day:-16 anymore:21 anything:-37 apaga:37 apago:28 apago_en:14 apenas:44
appointment_$:-16 aqui:-62 aqui_$:-47 are:-61 are__the:-30 are__to:71 are_about:71 are_fine:-18 are_in:-42 are_we:-15
are_you:-25 arrancar:32 arrancar_$:27 arrastrando:27 arrastrando_$:27 arreglan:-19 as:-62 as_butter:-18 asi:-32
ask:-40 ask_me:-17 at:28 at__speed:30 at__the:-16 at__you:19 at_all:-35 at_idle:28 at_me:15 at_my:-25 at_that:-17
at_work:-48 aunque:56 away:82 ay:28 ayer:52 ayuda_$:-16 azul_$:-32 bache:15 back_$:-45 back__the:-16 back_end:47
backing:22 bad:48 baja:-112 baja_$:-40 baje:26 baje_la:26 ball:70 barely:40 bateria:18 battery_was:30 be:-230
be__to:-29 be_able:-28 be_coming:-17 be_there:-60 bearing:-26 been:45 been_on:29 before:21 before_it:15 best:-16
best_$:-16 better:-38 better_$:-36 bien:-49 bien_$:-136 bien__que:33 bien_el:-15 big:16 bike:-55 bill:-43 bit:33
black:46 blanco:55 blew:32 blinker:95 blowing:17 book:-47 book_it:-25 both:58 bought:-22 bought_it:-17 box:35
box_$:36 brake:20 brake_$:41 brake__flush:-38 brake_fluid:-49 brake_job:-49 brake_lights:14 brakes:-16 brakes_$:-94
brakes__a:18 brakes__like:33 brakes__stop:35 brakes_are:44 brand:-16 break:-61 bridge:-21 brinca:42 bring:-37
broke:41 broken:64 btw:19 bumper_$:25 bumps:55 bumps_$:43 burning:54 burnt:14 but:220 but__is:103 but_it:110
but_monday:-16 but_my:45 but_the:47 but_there:48 butter:-18 butter_$:-17 by_a:-15 by_itself:42 by_the:45 cada:76
cadena:19 calendar:-17 calento:32 calienta:38 call:-27 call_me:15 calle:-24 cambiaron:-43 cambiaron_la:-25 cambie:-25
cambieme:-15 cambieme_la:-15 cambio:-42 cambio__aceite:-26 cambio_de:-34 cambios:130 came:46 came_on:107 came_up:-42
can:19 can__a:22 can__check:-32 can__come:19 can__drive:-32 can__get:-21 can__me:48 can__move:-25 can__the:33
can_i:-107 can_we:-30 can_you:-16 cancel:-35 cancel_$:-23 cant__in:26 cant_get:53 cant_stop:29 cap:-15 car:40
car__to:-19 car_and:-18 car_is:-33 car_wont:24 carga:49 carretera:22 carretera_$:20 carro:66 carro_$:-27
carro__como:70 carro_esta:-17 carro_no:17 carro_se:26 carros:-19 casa:-69 casi:61 casi_no:52 caso:-19 caso_$:-19
catches:61 catches_$:61 cel:18 cell:-15 center:16 change:-36 change_$:-19 changed_my:18 changing:14 charge:21
check_engine:38 check_the:-25 chispas:60 chunk:21 cien:-34 cien_$:-21 cita:-55 cita_$:-30 clicks:16 cliente:-16
clutch:21 cochera:34 cochera_$:21 coffee:56 cofre:23 cold:52 cold_$:21 come:-42 come_$:-19 come_in:-34
come_thursday:-23 coming:-16 coming_$:-35 como:132 como__las:-19 como__se:14 como_de:32 como_en:-16 como_no:-20
compadre:-16 compre:-20 con__de:15 con_un:-15 con_una:18 congratulations:-23 contento:-46 coolant:44 corner:-16
cosas:21 cosas_$:21 covered:-49 covered_$:-37 crank:37 cranks:62 crazy:43 crazy__the:16 crooked:24 cual:-30
cual__la:-18 cual_es:-19 cuando:52 cuando__vuelta:36 cuando_doy:36 cuando_freno:22 cuando_me:-33 cuanto:-25
cuanto__el:-24 cuanto__tardan:14 cuanto_cuesta:-14 cuanto_me:15 cuanto_por:17 cuesta:42 cut:30 da:76 dale:14 dar:52
dash:41 dash_$:22 day:-56 day_$:-20 days:35 days_$:41 de:-50 de__bateria:31 de__llanta:-51 de__manana:-15 de__por:19
de__que:-14 de_abajo:58 de_agua:59 de_baja:-24 de_la:-60 de_las:-42 de_llantas:-20 de_los:-42 de_que:-17 dead:28
deal:-16 dealer:-19 debajo:52 debajo_del:38 dejaron:52 dejo_la:-15 del:94 del__esta:33 del_aceite:37 del_carro:20
del_cofre:22 derecha:22 derecha_$:17 desde:57 desde_el:17 desde_que:27 desk:-24 di:-17 dia:-38 dia_$:-14 dice:56
dice_que:50 did:-84 did_it:-28 did_my:-22 didnt:20 died:86 died__the:47 digo:-23 dim:27 dios:25 direccion:-104
direccion_$:-96 do:-151 do__but:14 do__charge:25 do__go:-17 do__have:-15 do__need:-15 do_friday:14 do_i:-60 do_it:-27
do_that:16 do_you:-33 does__a:66 does_a:-37 does_it:-21 doesnt:78 doesnt__anymore:35 doesnt_work:21 dog:-24 doing:-19
donde_estan:-19 done:-51 done_$:-16 dont:41 dont_see:25 door:-169 door_$:-108 dos:22 dos_veces:21 dot:-15 down:117
down_$:-34 down__street:42 down__the:48 down_the:-17 doy:33 doy_vuelta:36 dream:-51 drive:100 drive_$:147
drive_it:-38 drive_through:15 driver:-18 drives:-124 drives__as:-50 drives_like:-74 driveway:75 driveway_$:70
driving:41 driving_$:35 drop:-27 drop__car:-14 drop_the:-14 dropped:36 dry:-38 dulce:23 duro:-33 e:19 e_brake:20
earlier:-15 echa:18 echa_humo:15 either:-16 el:132 el_$:-19 el__a:-72 el__cuanto:21 el__de:-27 el__del:28 el__en:-22
el__la:-19 el__le:21 el__lo:-24 el__me:-18 el__no:105 el__pero:51 el__se:141 el__va:57 el__vibra:23 el__y:59
el_aceite:-60 el_acelerador:34 el_anticongelante:54 el_cambio:-30 el_carro:41 el_de:-59 el_dia:-18 el_escape:17
el_freeway:-27 el_freno:78 el_humo:-23 el_jueves:-26 el_martes:-33 el_mofle:29 el_motor:31 el_pedal:43 el_radiador:17
el_ruido:-29 el_sabado:-23 el_trabajo:-63 el_volante:84 elsewhere:-14 en:69 en_$:-23 en__calle:-17 en__carretera:22
en__casa:-51 en__cochera:35 en__de:-16 en__freeway:-27 en__mananas:28 en__me:19 en__puente:15 en_cuanto:18 en_el:-33
en_frio:24 en_la:15 en_las:95 en_los:53 en_otro:-15 en_que:-30 en_un:-31 end:58 end_of:-14 enfrente:49 engine:105
entran:108 entrar:55 entro:-22 entro_$:-18 equivocado:-23 equivocado_$:-19 era:-33 es:-92 es_$:-48 es_la:-20
es_que:45 esa:18 esa_hora:16 escape:18 ese:-25 eso:-90 eso_$:-22 esta:40 esta__la:-37 esta__no:-16 esta_baja:-31
esta_bien:17 esta_muy:-16 estan:-55 estan_$:-52 estimado:-19 estoy:-58 ever:-24 every:32 every_morning:58
every_time:18 ex:-35 exclamation:59 exclamation_mark:58 exhaust:40 exit:18 eyes:19 fall:-17 fan:23 favor:15
favor_$:-57 favor_y:25 feel_like:-27 feels:116 feels_like:54 fell:-32 feo:23 fierro:21 fill:43 fine:-29 fine_$:-57
finger:30 fire:-21 first:-50 first_$:-72 fix:43 fixed:-104 fixed_$:-24 fixed_it:-15 flashing:24 flashing_$:17 flat:23
flat__the:49 flat_out:-39 floor:17 fluid:-60 fluid_$:-30 fluid_flush:-38 flush:-52 flush_$:-43 foco:-61 fondo:18
foquito:41 for:-121 for__appointment:20 for__brakes:-27 for__first:23 for__oil:-15 for_a:19 for_brakes:-25 for_my:19
for_the:-50 for_tomorrow:16 forever:20 forever_to:55 forgot:-18 found:46 found_a:53 free:-18 freeway:17 freeway_$:28
frena:88 frenar:97 frenar_$:66 freno:130 freno_$:31 freno_se:14 frenos:-49 frenos_$:-89 friday:-18 friday_$:-17
friday__it:34 friday_at:-31 friday_but:15 friend:66 frio:39 frio_$:39 from:67 from__back:29 from__rear:17
from__the:52 from_me:-15 from_the:48 from_under:49 from_you:17 front_$:18 front_desk:-22 front_tire:22 fue:-74
fuerza:69 fuerza_$:16 fuga:84 fyi:20 garage:47 garage_$:23 gas:-16 gauge:18 gave:-14 gear:102 gear_$:58 gears:16
get:70 get__on:39 get_a:22 get_back:-16 get_it:64 get_my:-22 gets:18 getting:20 gimme:-14 go:99 go_$:53 go_ahead:-30
goes:60 going:63 going__be:-25 going__have:-15 going_on:-16 going_to:-128 going_up:47 gone:-59 gone_$:-30 good:-40
good_$:-29 good_for:14 good_to:-14 got:21 got_a:45 got_it:-22 got_real:16 got_to:26 gps:-16 gracias:-31 gracias_$:-75
gracias__me:14 gracias_aunque:19 gracias_ya:14 grease:-21 grease__over:-16 grease_all:-16 great:-83 great_$:-16
green:56 grinding:79 gusto:-30 guy:-49 hablamos:-19 hablamos_$:-17 hace:145 hace_como:19 hace_ningun:-23 hace_un:62
hacen:-64 hacer:-18 haciendo:42 had:39 had__get:49 had_a:-29 had_the:-16 had_to:96 haha:-36 hands:20 hanging:39
happens__i:-23 happens_if:-23 hard:42 hard_to:34 has:-53 has__on:30 has_a:-43 has_been:31 hasta:23 hasta_el:16
hasta_que:-23 have:20 have__a:-17 have__cancel:-14 have__it:22 have_a:23 have_been:14 have_no:15 have_the:-18 hay:57
hay_que:31 head:-16 headlights:104 hear:43 heard:44 heard_a:39 help:22 help_$:-33 help__stuck:50 help_im:50 her:-25
here:-87 here_$:-62 hey:-20 hi:-31 high:19 highway:37 hija:-17 hill:65 hill_$:54 hills:98 hills_$:84 his:-62
his_bike:-52 hissing:19 hit:-62 hit__pothole:29 hit_a:33 hit_the:16 hitch:-14 hizo:-14 hold:108 home:25 home_$:23
hood_$:-42 hora:-50 hora_$:-54 hot:21 hour:-21 hours:-15 how:-205 how__are:-24 how__for:-28 how__is:-49 how__to:23
how__was:-15 how_do:-16 how_long:-23 how_low:-43 how_many:-14 how_much:-80 hoy:77 hoy__manana:-37 hoy_mismo:19
hoy_no:38 hoyo:18 huele:91 huele__quemado:16 huele_a:75 huele_dulce:15 huevo:29 hum:28 humo:84 humo__al:28
humo_blanco:38 humo_negro:44 i:83 i__a:68 i__and:-16 i__be:-65 i__down:32 i__for:-24 i__in:-19 i__it:-38 i__like:-34
i__my:17 i__no:14 i__on:41 i__see:74 i__smoking:-60 i__that:38 i__the:25 i__there:-18 i__who:-24 i__with:-18
i_brake:15 i_came:-32 i_can:79 i_come:-16 i_dont:34 i_drive:-15 i_drop:-18 i_feel:-15 i_get:-59 i_go:-15 i_had:30
i_have:53 i_hit:73 i_just:-28 i_know:-18 i_left:-40 i_moved:28 i_need:-68 i_park:74 i_pick:-17 i_pulled:-19
i_quit:-60 i_skip:-25 i_slow:32 i_stop:30 i_stopped:18 i_think:118 i_turn:14 i_was:-29 i_wont:-85 i_work:-14 id:-43
id__to:-41 id_like:-41 idea:26 idle:109 idle_$:24 if:-27 if__skip:-25 if_i:19 if_it:-38 igual:28 igual_$:31 ill:-118
ill__in:-17 ill__it:-39 ill__you:-26 ill_do:-27 ill_let:-28 im__on:35 im__the:-32 im_driving:-18 im_good:59 im_in:-16
im_on:-39 im_stuck:48 in:32 in_$:-83 in__and:21 in__car:-42 in__driveway:17 in__garage:26 in__is:-30 in__middle:23
in__morning:-24 in__now:47 in__on:20 in__out:-15 in__parking:14 in__shop:-22 in__sidewall:29 in_a:55 in_and:-22
in_it:-24 in_park:63 in_second:81 in_the:20 in_traffic:15 info:-22 info_$:-20 inside:21 interested:-24
interested_$:-22 into_the:-30 is:76 is_$:-18 is__again:14 is__and:14 is__at:-14 is__brake:-59 is__but:29 is__car:-31
is__going:-25 is__hard:24 is__in:29 is__like:31 is__off:18 is__out:33 is__really:15 is__safe:-15 is__something:17
is__still:-16 is__the:-75 is__what:24 is_at:-29 is_been:18 is_cold:31 is_fixed:-43 is_getting:25 is_going:35
is_gone:-56 is_good:-14 is_got:31 is_in:-50 is_it:-161 is_leaking:39 is_making:38 is_no:-24 is_out:19 is_perfect:-28
is_shaking:51 is_something:-25 is_the:-100 is_there:-30 is_this:-38 isnt:-22 it:181 it_$:-202 it__after:-14
it__been:19 it__cold:31 it__down:38 it__friday:-19 it__got:31 it__i:-25 it__in:-30 it__into:27 it__like:-26
it__no:-17 it__ok:22 it__on:-24 it__over:22 it__smoking:-15 it__the:-97 it__then:48 it__this:17 it__to:-42
it__today:19 it__totaled:-14 it__up:14 it__when:56 it_a:-30 it_and:16 it_back:-45 it_died:33 it_does:81 it_doesnt:-34
it_down:-15 it_for:-18 it_friday:-33 it_goes:17 it_has:19 it_in:-46 it_just:33 it_like:-36 it_makes:46 it_off:-22
it_on:-51 it_over:-27 it_safe:-15 it_smells:21 it_so:-15 it_starts:-33 it_still:64 it_takes:25 it_the:15
it_thursday:-24 it_till:-15 it_turns:31 it_up:-16 it_with:-16 it_wont:70 itself:59 itself_$:31 jaja:-53 jaja_$:-34
jala:14 jalonea:35 jerks:30 job:-73 juego:49 jueves:-24 jueves_$:-29 jueves__las:-29 jueves_a:-29 jueves_pero:23
june_$:-17 just:20 just__in:15 just__on:56 just__you:14 just_died:46 k:-33 k_$:-27 keeps:77 keeps__up:15 key:51
kid:-45 kid__a:-37 kid_has:-51 knock:-42 knocking:26 know_who:-23 la:44 la__al:18 la__de:32 la__del:53 la__en:-17
la__hoy:-33 la__la:-18 la__no:109 la__por:-14 la__se:54 la__semana:-18 la__trae:23 la__trasera:17 la__vez:-19
la__y:-42 la_aguja:18 la_bateria:41 la_carretera:22 la_casa:-59 la_cita:-45 la_cochera:34 la_derecha:17 la_hora:-53
la_lavadora:-21 la_llanta:64 la_luz:-29 la_noche:-19 la_otra:-19 la_palanca:35 la_pila:60 la_reversa:57 la_rueda:36
la_segunda:19 la_semana:14 la_suspension:24 la_temperatura:-16 la_troca:-32 la_ultima:-18 la_velocidad:40 lado:69
lado_$:39 lamp:14 largo:19 las:170 las_$:-48 las__la:-19 las__ya:37 las_balatas:20 las_llantas:-42 las_mananas:28
last:-47 last__and:18 last_night:54 last_time:-16 last_year:-41 latch:57 late:-93 late_$:-108 lately:88 lately_$:88
later:-18 lavadora:-36 le:135 le__a:-46 le__cuando:62 le__un:71 le_cambiaron:-18 le_cambie:-14 le_digo:-18 le_hice:16
le_oye:20 le_sale:106 le_van:-17 leak:-69 leaking:53 leaks:-30 leaks_no:-48 leans:14 left:-96 left_$:-30
left__the:-33 left_a:-95 left_blinker:95 left_on:-44 left_rear:25 let:22 let__know:-25 let_go:92 let_me:-31
let_you:-24 life:-18 light:42 light__on:72 light_came:63 light_is:67 lights:-104 lights_$:-107 like:137 like__in:65
like__is:25 like__on:27 like_a:21 like_crazy:46 like_to:-45 limpiaparabrisas:-66 line:37 line_$:36 liquido:-27
liquido_$:-16 lit:20 lit_up:17 little:32 llamada:-15 llamenme:16 llanta:134 llanta_$:-25 llanta_trae:23 llantas:-130
llantas_$:-81 llego:-73 llego_$:-48 llego_en:-19 llevo_$:-15 lo:-112 lo__a:-39 lo__la:-14 lo__mi:-24 lo__ya:14
lo_deje:18 lo_di:-14 lo_vendi:-23 lol:-195 lol_$:-158 long:-17 look_like:26 looks:62 looks_like:20 loose:-36
loose_$:-31 los:133 los__no:42 los__rechinan:-53 los__se:28 los_cambios:126 los_frenos:-17 los_ninos:48 lost:73
lot:-33 lot_$:-14 loud:42 louder:-61 low:-16 low_$:-37 luces:31 luego:-18 lugar:-18 lunes_$:-22 luz:-68 luz__la:-42
luz_amarilla:14 luz_de:17 made:20 make:-86 make_it:-93 makes:87 makes_a:28 makes_the:40 making:52 making_a:35 mal:-18
mal_$:-16 manana_$:-46 manana_se:14 mananas:28 mananas_$:31 manda:-21 mande:-34 many:-17 march:-17 marcha:106
marcha_$:82 mark:58 martes:-28 martes__el:-54 martes_pero:33 mas:-59 mas__que:23 mas_adelante:-73 mas_pronto:21
mas_que:-14 may:-15 maybe:-14 maybe_in:-23 me:-61 me_$:59 me__como:-14 me__con:-15 me__el:-80 me__en:41 me__hasta:16
me__it:17 me__la:-63 me__los:24 me__my:14 me__para:30 me__que:59 me__sin:16 me__the:-15 me__tirado:27 me__un:-17
me__una:-25 me_again:-19 me_apago:15 me_but:14 me_da:-50 me_dejaron:-28 me_dejo:31 me_hizo:-17 me_in:-21 me_manda:-20
me_quede:91 me_rayaron:-17 me_sale:23 me_up:-29 me_va:58 mean_$:16 mean_on:-33 mechanic:47 media:-18 meh:-27
mejor:-99 mejor__jueves:-16 mejor_el:-19 mejor_la:-14 menos:-16 mensajes:-14 metal:99 metal_$:53 metal__metal:26
meter:14 mi:-104 mi__dice:15 mi__para:-16 mi_carro:39 mi_compadre:-16 mi_hija:-17 middle:18 middle__the:26
middle_of:19 miercoles_por:17 mil:-53 mil_$:-22 miles:-21 miles_$:-22 millas:-29 millas_$:-17 min:-161 min_$:-117
min_late:-24 mine:39 minivan:-15 minute:14 mis:-41 mismo:21 miss:-48 miss_it:-36 mofle:29 monday_$:-30 monday_but:20
money:-37 month:-14 month_$:-15 more:-23 morning:53 morning_$:81 mornings:41 motor:16 motor_$:23 move:-25 move_it:-14
much:-101 much__a:-30 much_for:-26 much_is:-35 much_to:22 mucho:17 mucho_para:33 must:-17 muy:-81 my:-56 my__at:-17
my__back:-19 my__car:-28 my__going:-26 my__has:-65 my__in:-29 my__is:29 my__keeps:41 my__oil:-19 my__so:-14
my__wont:44 my_appointment:17 my_brakes:76 my_car:-36 my_driveway:56 my_kid:-54 my_mechanic:77 my_number:-29
my_oil:50 my_old:-20 my_own:-22 my_seat:-17 my_tire:40 my_tires:60 my_way:-62 my_work:-27 myself:-22 nada:-58
nada_$:-18 nail:23 nearly:35 necesito:-16 need:-122 need__ride:-25 need_a:-37 need_to:-55 needing:29 needle:53
negro:58 neutral:21 neutral_$:21 new:-93 new_$:-53 new_battery:-46 new_tires:-19 new_year:16 next:-95 next_week:-58
ni:-54 ni__ni:-23 ni__no:18 ni_un:-15 night:44 night_$:28 ningun:-100 ningun_ruido:-30 ninguna:-61 ninos:47
ninos_$:65 no:51 no_$:-155 no__all:-35 no__at:-58 no__aunque:15 no__bien:47 no__como:17 no__el:25 no__en:31
no__here:-23 no__is:14 no__it:28 no__la:41 no__los:59 no__nada:-58 no__ni:-41 no__ningun:-87 no__ninguna:-58
no__no:-110 no__nomas:25 no__on:-24 no__pero:17 no__por:-15 no__ya:14 no__you:24 no_agarra:55 no_arranca:28
no_frena:89 no_hace:-32 no_hay:-42 no_it:25 no_la:-18 no_leaks:-52 no_me:35 no_noise:-99 no_para:49 no_prende:55
no_quiere:97 no_quiero:-15 no_quiso:50 no_rechina:-21 no_se:-26 no_smoke:-41 no_soy:-17 no_thank:15 no_thanks:43
no_tiene:-74 no_trae:-83 no_veo:17 no_voy:26 no_you:-50 nobody:-21 noche:-14 noise_$:60 noise__all:-69
noise__fixed:-22 noise_at:-64 noise_is:14 noise_that:27 noises:-29 noisy:-33 nomas_el:-52 nombre:-17 normal:38
nos:-16 nose:23 not:-119 not__now:-23 not__this:-17 not__week:44 not_a:-19 not_at:18 not_doing:-15 not_going:-28
not_interested:-23 not_right:-40 not_this:41 nothing:40 now_$:-100 now_it:41 nueva:-19 nuevas:-56 nuevas_$:-29
nuevo:-22 nuevo_$:-15 number:-50 number_$:-28 numero:-15 o:-30 o_el:-14 of:47 of_$:-22 of__all:51 of_a:26 of_my:33
of_the:30 off__i:21 oiga:17 oil:-48 oil_change:-27 oil_light:31 oil_pressure:44 ok_$:-20 ok__do:15 ok__it:-18
ok_but:22 ok_friday:36 ok_to:-14 old:-48 on:203 on_$:31 on__freeway:50 on__highway:21 on__hill:48 on__i:33 on__is:24
on__side:24 on__th:-47 on__way:-44 on_a:64 on_after:32 on_and:19 on_friday:-21 on_hills:58 on_it:-14 on_me:59
on_my:-82 on_your:-30 once:-39 one_$:-74 one__my:30 one_is:-26 one_of:39 one_side:24 only:-14 open:53 opt:-15 or:-120
or_anything:-36 or_the:-20 other:26 other_one:18 otra:21 otra__el:17 otra_semana:-14 otra_vez:41 otro:-45 out:70
out_$:41 out__door:-31 out__me:43 out__the:20 out_last:22 out_no:-36 out_on:48 over:158 over_$:46 over__and:18
over__the:26 over_bumps:43 over_the:24 overnight:14 own_oil:-19 oye:117 oye_un:41 pads:-52 pads_are:-23 paid:-15
palanca:35 paper:-17 para__de:-18 para__derecha:16 para__en:37 para__lado:40 para_cuando:-16 para_el:-36 para_la:31
para_su:-18 para_un:41 parado:-20 park:138 park_$:97 paro:19 parts:-19 pasa:-14 pasar:85 pase:-15 paso:35 paso_el:15
pass:-30 pass_$:-32 past:59 past_$:28 pedal:141 pedal_$:15 pedal__like:16 pedal_is:19 perdon:-15 perfect:-32
perfect_$:-30 perfecto:-20 perfecto_$:-17 pero:151 pero__no:24 pero_le:40 pero_no:-15 phone:-49 phone_$:-24 pick:-24
pick__up:-14 picked:14 pie:26 pierde:100 pila:60 ping:29 pink:31 place:-23 plan:-86 plan_$:-79 plastic:39
please_$:-41 please__is:22 point:32 pole:39 poncho:16 poner:-20 pop:-15 por:22 por__y:28 por_donde:14 por_que:-32
porque:46 porque_se:34 possible:20 possible_$:15 pothole:29 power:114 precio:-35 prende:120 prende_$:40 prender:47
prendida:-54 prendido:-47 prendido_$:-32 prendio:38 prendo:14 pressure:49 price:-62 price_$:-26 pronto:20 puddle:42
puede:-23 puede_ser:16 puedo:46 puente:17 puente_$:21 pues_$:-15 pull:-65 pulled:-56 pulled_a:-36 pulls:54 pump:70
puse:-15 puso:15 put:-36 que:107 que__el:14 que__estan:-21 que__la:15 que__le:-21 que__no:-17 que__por:19
que__van:-15 que_baje:34 que_es:-28 que_la:27 que_le:-53 que_me:-14 que_se:41 que_tanto:-17 que_va:-16 que_ya:19
queda:19 quede__en:17 quede_muy:-55 quede_sin:16 quedo:-133 quedo_$:-29 quemado:37 quick:-15 quien:-30 quien_es:-19
quiere:102 quiero:-24 quiero_$:-14 quiso:50 quit:-96 quit_$:-45 quit__me:14 quit_on:50 quit_sending:-15
quit_smoking:-68 quita:42 quita_$:42 radiador:23 radiador_$:15 raining:26 raro:52 rato:-32 rato_$:-16 rayaron:-17
reads:35 real:30 really:25 rear:61 rechina:-14 rechinando:23 red:-76 red_light:-108 reminders:-31 reminders_$:-28
replaced:-69 replaced__battery:-15 replaced_in:-19 replaced_the:-51 report:-31 reversa:75 reversa_$:66 reverse:64
ride:-32 ride_$:-23 right:-127 right_$:-55 right_now:-102 rip:23 road:-21 rock:26 roja:19 rojo:34 rough:69 rude:-15
rueda:37 ruido:73 ruido_$:63 ruidos:-100 ruidos_ni:-42 running:31 running_late:-22 runs:-24 sabado:-26 saca:17
safe:-15 safe__drive:-20 safe_to:-15 said:-49 saldria:19 sale:114 sale_$:-67 sale__velocidad:34 sale_de:14
sale_humo:57 sale_un:39 sale_vapor:27 saliendo:-14 same:-23 say:-32 says:54 se:321 se__apago:15 se__con:-28
se__cuando:20 se__en:15 se__hasta:22 se__hizo:-17 se__la:-46 se__las:17 se__llevo:-34 se__no:15 se__oye:20 se__que:50
se__sale:25 se__sin:30 se__un:47 se__va:70 se__y:52 se_apaga:27 se_calento:28 se_calienta:38 se_equivocado:-20
se_esta:28 se_fue:-41 se_jalonea:32 se_la:-28 se_le:51 se_lo:-124 se_los:-21 se_me:129 se_oye:110 se_prendio:16
se_puede:-30 se_queda:23 se_quita:42 se_siente:29 se_va:41 season:-17 seat:46 second:58 second_$:-33 second_gear:86
sedan:-18 see:93 segunda:24 segunda_$:27 seguro:-19 sending:-28 sending_me:-18 senorita:19 seria:14 seria_$:15
set:-21 shake:-93 shake__it:-51 shake_on:-51 shakes:66 shaking:25 she:50 shes:18 shifts:92 shimmies:75 shocks:-14
shop:-47 should:-19 should_i:-20 shoulder:101 shoulder_$:51 showed:35 shredded:15 shut:88 shut_$:44 shuts:28
shuts_off:28 si:30 si_$:-15 si__las:14 si__llevo:17 si__martes:36 si__no:-24 si_a:14 si_el:31 si_pero:41 si_ya:-17
side:30 side_$:16 sidewall:29 siente:29 siente_que:22 sign:-34 sign__up:-21 sign_me:-23 sigue:56 sin:62 sin_aire:15
sin_luces:16 since:-18 since_i:40 sirven:18 skip:-34 sky:32 slow_down:-22 smell:40 smells:40 smells_like:58 smoke:-51
smoke__the:-15 smoke_break:-40 smoke_from:-23 smoking:-93 smooth__butter:-18 smooth_as:-18 so:-50 so__can:-14
so__i:22 so__is:-16 so__know:14 so_i:-28 so_it:-15 so_you:14 soft:19 sola:24 sold:-34 solo:39 some:-28
somebody__me:19 something:26 something__up:-45 something_came:-45 son:-14 soon:-19 sooner:24 sorry:-57 sorry_$:-21
sound:59 sounds:-88 sounds__a:-98 sounds_good:-26 sounds_like:-47 soy:-32 sparks:46 speak:-18 speak_to:-20 speed:76
speed_$:45 squeaking:-56 squeaks:-60 squeal:22 start:-64 start_$:-64 started:28 starts:-65 stay:49 steam:25
steering:117 steering__is:15 steering__real:16 steering_got:24 steering_wheel:16 step:61 sticker:-14 still:34
still__the:20 still_on:-70 stop:73 stop__a:19 stop_at:18 stop_in:25 stopped:17 store:16 straight:-15 street:36
street_$:26 stuck__traffic:-39 stuck_behind:-20 stuff:43 stuff_$:35 su:-82 su__jaja:-17 sube:41 suena_bien:-61
super:22 sure:-21 suspension:24 symbol:31 tablero:20 tailpipe:43 take:-33 take_the:-19 takes:77 takes__to:75
takes_forever:50 talk:-31 taller:-32 taller_$:-22 tambien:59 tan:-17 tanto_que:23 telefono:-16 temp:44 ten_minutes:14
tengo:43 tengo_que:24 termine:-18 termometro:33 text:-18 texting:-28 texting_me:-19 texts:-44 texts_$:-20 th:-70
th_$:-40 than:-42 thank:-21 thank_you:-21 thanks_$:-37 thanks_a:-16 thanks_it:35 that_$:-37 that__a:-20 that__i:16
that__the:-15 that_car:-14 that_gets:20 that_is:-22 that_price:-17 that_the:-18 the:88 the__after:-16 the__and:-47
the__at:-30 the__be:-43 the__before:-15 the__box:36 the__brake:22 the__by:-25 the__change:-15 the__desk:-17
the__doesnt:74 the__down:56 the__end:45 the__fluid:-16 the__from:-35 the__front:58 the__has:-33 the__if:37 the__is:16
the__it:39 the__job:-39 the__last:18 the__light:43 the__line:49 the__need:-35 the__next:-25 the__no:-14 the__now:-16
the__of:-23 the__off:-22 the__one:-15 the__says:16 the__since:40 the__that:16 the__through:15 the__to:28
the__truck:-17 the__up:-26 the__was:-47 the__went:114 the__were:-32 the__year:17 the_back:103 the_battery:-28
the_better:-15 the_brakes:-27 the_bridge:-20 the_car:-52 the_dealer:-16 the_dog:-25 the_door:-102 the_drive:22
the_e:20 the_engine:22 the_first:22 the_floor:15 the_freeway:50 the_garage:27 the_guy:-14 the_highway:17 the_hill:36
the_hood:-18 the_key:14 the_leak:-42 the_left:19 the_lights:17 the_mechanic:-26 the_middle:22 the_morning:-28
the_new:17 the_noise:60 the_oil:-27 the_old:-33 the_pads:-21 the_pedal:46 the_phone:-19 the_rear:20 the_red:18
the_right:38 the_seat:41 the_second:-52 the_shop:-29 the_shoulder:97 the_sidewall:29 the_sky:32 the_smoke:-27
the_steering:43 the_stop:38 the_street:-22 the_tailpipe:16 the_temp:25 the_texts:-29 the_th:-68 the_thing:18
the_time:17 the_tires:-99 the_truck:83 the_vents:14 the_visit:-52 the_way:88 the_wheel:54 the_wheels:-14 the_whole:23
the_wiper:-35 them:-27 then_$:-35 then_it:42 there:74 there_$:-61 there__a:136 there__an:21 there__no:-21 there_a:-25
there_is:163 there_was:52 there_with:-20 these:-29 they:-66 they__the:-46 they_replaced:-38 things:-56 think:77
think_$:100 think__it:-26 this:-15 this_$:-49 this__is:-34 this_is:-18 this_morning:82 this_one:-37 this_week:74
those:-72 though:55 though_$:48 thousand:-21 thousand_miles:-14 three:78 threw:-16 threw__in:-15 through:45
through_$:24 thumbsup:-14 thumbsup_$:-14 thurs_works:18 thursday:-24 thursday_$:-64 thursday_please:15 tiembla:54
tiempo:-19 tienen:-48 tight:24 till:-29 till_the:-18 time_$:-18 time__hit:27 time_i:16 times:14 timing:-14
timing_belt:-14 tira:41 tirado:27 tirando:21 tire:124 tire_$:37 tire__a:17 tire_is:41 tire_on:-36 tired:-15
tires:-135 tires_$:-70 tires_look:21 to:33 to_$:-23 to__a:68 to__at:25 to__in:-21 to__it:46 to__late:-23 to__my:-29
to__no:-15 to__off:26 to__that:18 to__the:32 to__to:-37 to_be:-33 to_bring:-19 to_call:-24 to_cancel:-21 to_drive:-40
to_fix:46 to_get:96 to_have:-15 to_hold:17 to_let:66 to_make:-22 to_me:-20 to_say:-22 to_speak:-20 to_start:67
to_stop:47 to_talk:-15 to_you:-16 toda:26 toda_la:19 today:90 today_$:75 todo:-52 todo__con:-56 todo_bien:-84
todo_el:67 told:21 told_me:16 tomorrow:44 tomorrow_$:26 too_$:31 too_much:-19 took__to:47 top:-14 tosiendo:33
totaled:-26 tow:-21 tow_hitch:-14 toward:50 toward_the:51 trabajo:-65 trabajo_$:-28 trabajo_no:-37 trae:116
trae__la:64 trae__luz:-51 trae_la:32 trae_un:54 trae_una:45 traffic:-15 traffic_$:20 traffic_is:-30 traigo:24
traigo_la:20 trail:55 trail_of:55 train:-14 trasera:17 tread:-14 trip:-25 troca:-34 truck:43 truena:45 tues:38
tuesday:-15 tuesday_$:-16 turn:60 turn_$:16 turns:131 twice:69 twice_today:33 two:53 ultima:-18 ultima_vez:-15 un:154
un__a:16 un__cuando:16 un__en:14 un__que:29 un_lado:58 un_rechinando:19 un_ruido:59 un_zumbido:30 una:136
una__amarilla:17 una__de:-22 una__roja:16 una_llanta:54 una_luz:28 under:113 under__dash:23 under__hood:-42
under_me:68 under_the:56 underneath:15 until:-17 up:84 up_$:35 up__a:14 up__i:14 up__the:-21 up_at:-30 up_in:-18
uphill:69 urge:-14 urgent:14 us:-28 ustedes:-26 uy:15 va:143 va_de:21 va_el:18 va_para:36 va_que:-15 vacation:-28
vale:-15 van__hacer:-16 van_a:-23 vapor:38 veces:40 vecino:15 velocidad:71 velocidad_$:71 venden:-48 vendi:-28
vendimos:-28 vents:14 vez:30 vez_$:-16 vi:30 vibra:50 vibrates:58 viene:34 viernes:-22 viernes_$:-25 visit:-58
visit_$:-56 volante:84 volante_$:30 voy_a:-19 voy_saliendo:-14 voy_tarde:16 vuelta:33 vuelta_$:49 warning:-108
was:-88 was__again:35 was__last:-19 was__on:-15 was__the:-19 was_a:46 was_fixed:-31 was_in:-18 was_the:-21 wasnt:-19
water:41 water_$:17 way:40 way_home:22 we:-104 we__it:-22 we_move:-25 week_$:-55 weird:23 went:148 went__in:27
went__on:49 went__the:-18 went_away:101 went_out:61 were:-72 were__in:-15 were__on:-37 what:-117 what__a:-25
what__if:-23 what__it:17 what__the:-45 what__you:21 what_do:22 what_does:-36 what_happens:-25 what_is:-65 wheel:103
wheel_bearing:-26 wheel_is:18 wheels:-45 wheels_are:-16 when:117 when__i:-41 when__is:26 when__slow:-26 when__turn:22
when_i:160 when_it:42 when_the:-26 when_would:-16 whenever:-20 where:40 where__i:-24 where_do:-24 where_i:56
which:-93 while:20 white:16 who:-56 whoever:-33 whole:91 whole_car:65 why:-46 why__it:-14 why_does:-19 will:-95
will_the:-44 window:-33 windshield:22 wiper:-56 wipers:-101 wires:59 with:-74 with_$:-22 with__texts:-14
with_speed:38 with_the:-65 wobbles:59 won:-21 wont:49 wont__able:-28 wont__coming:-17 wont__in:31 wont__it:-94
wont__over:23 wont__there:-32 wont_be:-107 wont_go:24 wont_make:-62 wont_start:54 wont_turn:16 work:-66 work__the:-14
works:82 worse:33 worth:-17 would:-39 would__be:14 would_i:-24 wouldnt:15 write:-15 wrong:-29 y:169 y_$:-38
y__dulce:15 y__no:24 y__se:25 y_ahora:20 y_casi:34 y_el:-18 y_es:16 y_huele:19 y_lo:16 y_me:-24 y_nada:35 y_no:34
y_por:-17 y_se:30 y_ya:33 ya:-39 ya__cambiaron:-24 ya__en:23 ya__le:16 ya__rechina:-18 ya__tiene:16 ya_casi:21
ya_esta:-18 ya_le:-47 ya_lo:-20 ya_me:27 ya_ni:35 ya_quedo:-32 ya_tiene:-14 ya_voy:-18 yeah:-57 yeah_$:-14 year:-30
year_$:-45 yep__you:14 yes_$:-47 yes__i:-15 yes__works:69 yes_i:-14 yes_it:17 yes_monday:33 yes_please:23
yes_thurs:18 yet:-18 yet_$:-15 yo__le:14 yo_no:26 you:-286 you_$:-38 you__a:-99 you__it:19 you__my:-33 you__the:-65
you_can:15 you_charge:25 you_check:-32 you_guys:-20 you_have:-28 you_left:-103 you_said:-27 your:-133 zero:23
zumbido:30
"""
