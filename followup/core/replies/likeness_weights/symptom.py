"""What speaks for and against `symptom`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "symptom"
BIAS = -139
WEIGHTS = """\
#abad:-29 #abaj:75 #abel:61 #abla:-26 #abou:29 #abra:-26 #abri:-53 #abro:106 #acce:39 #acci:-26 #aced:-61 #acei:45
#acel:93 #acen:-65 #acer:-45 #ache:55 #acho:49 #acia:25 #acie:39 #acin:32 #acio:48 #adas:-34 #adea:36 #adec:-73
#adel:-102 #aden:59 #adia:40 #adli:101 #ados:-31 #adre:-22 #afor:27 #afte:24 #agai:46 #agar:78 #agen:-28 #agra:-95
#agua:253 #ahea:-49 #ahor:46 #ailp:45 #aini:31 #airb:79 #aire:58 #akes:217 #akin:83 #alan:26 #alar:-57 #aldr:24
#aled:-28 #alen:82 #ales:72 #alfw:23 #algo:74 #algu:25 #alie:65 #alin:25 #alle:-45 #alli:55 #allo:61 #ally:23
#almo:38 #alon:81 #alre:-58 #also:94 #alte:35 #alto:64 #alum:70 #amad:-23 #aman:53 #amar:33 #amas:-22 #amat:70
#ambe:40 #ambr:25 #amin:69 #amos:-81 #ampo:31 #anan:37 #anas:-30 #anca:98 #ance:-72 #anco:71 #anda:147 #andb:79
#ande:-87 #ando:171 #anec:59 #ange:-55 #angi:49 #anic:76 #anks:92 #anoc:46 #ansm:-31 #anta:34 #anti:52 #anto:-35
#anym:39 #anyt:-55 #apag:133 #apar:-84 #apen:39 #apor:40 #aque:-24 #aqui:-49 #arab:-56 #arag:47 #arca:-32 #arch:103
#arco:36 #arel:40 #arga:30 #argo:36 #arks:61 #arle:57 #arlo:32 #arly:46 #arni:-105 #aron:-152 #aros:48 #arpa:36
#arra:195 #arte:39 #arts:-88 #asad:-39 #asar:91 #asca:61 #ashb:45 #ashi:35 #asol:27 #asta:23 #asti:33 #astr:34
#atal:25 #atbe:60 #atch:72 #atel:110 #ates:83 #atin:57 #atro:-43 #atte:44 #atul:-27 #auge:24 #augh:22 #aunq:40
#aust:48 #avad:-44 #aven:-30 #avia:-32 #avis:-22 #away:72 #awfu:30 #ayed:29 #ayer:72 #bach:46 #bado:-40 #baja:-90
#baje:37 #bajo:174 #bald:41 #ball:76 #bare:40 #bble:84 #beat:-25 #been:54 #befo:30 #bele:61 #belt:49 #best:-23
#bett:-39 #biar:-68 #bica:-41 #bida:63 #bido:34 #biem:-65 #bike:-60 #bill:-33 #bing:45 #bios:139 #blac:64 #blam:-27
#blan:34 #blar:40 #bles:80 #blew:38 #blin:131 #blow:54 #blue:24 #boar:43 #body:-23 #bomb:44 #bone:23 #book:-41
#boom:46 #borr:55 #bota:64 #both:45 #bout:23 #brak:109 #bran:51 #brar:24 #brat:77 #brea:-67 #brec:80 #bris:-56
#brok:95 #buen:-36 #bump:63 #burn:56 #butt:-25 #buzz:32 #cabe:49 #cabl:29 #cada:92 #cade:28 #cado:-40 #cale:82
#cali:54 #call:-46 #camb:-57 #came:57 #cami:42 #canc:-51 #cani:23 #cant:38 #care:-28 #carg:42 #carr:82 #cart:30
#casa:-76 #casc:61 #casi:110 #catc:64 #cati:-36 #ccel:28 #ccid:-34 #ceit:45 #cele:126 #cesi:-27 #char:78 #ched:-27
#chem:-29 #cher:36 #ches:60 #chis:93 #chor:23 #chun:24 #cias:-39 #cida:66 #cide:-31 #cien:30 #ciga:-25 #cing:40
#cion:31 #cita:-24 #ckin:54 #clam:68 #clie:-24 #clim:27 #clun:86 #clut:25 #coas:45 #coch:36 #coff:47 #cofr:25
#cold:56 #colo:27 #come:-85 #como:84 #comp:-125 #cond:86 #conf:-41 #cong:31 #cont:-78 #cool:62 #coug:37 #coun:-25
#cove:-61 #cran:102 #crat:-53 #craz:40 #cree:24 #croo:44 #ctio:36 #ctri:33 #cuad:30 #cual:-64 #cuat:-24 #cuch:30
#cuen:-22 #cues:48 #curv:31 #dame:-24 #dash:57 #date:-30 #davi:-25 #dded:29 #dder:33 #ddle:65 #deal:-51 #deba:68
#dece:-74 #deje:-27 #dejo:-25 #dela:-104 #deme:-46 #dena:29 #dere:22 #ders:55 #desd:54 #desk:-36 #dewa:34 #diad:38
#dice:49 #dida:-62 #dido:-54 #died:86 #dier:-46 #dimo:-41 #ding:23 #dirt:-31 #disa:25 #dlig:108 #does:73 #doin:-41
#done:-26 #dont:58 #door:-175 #dora:-32 #dore:-40 #down:125 #dras:22 #drea:-52 #dria:29 #drip:26 #driv:65 #drop:71
#duri:26 #eadl:117 #eads:45 #eady:-67 #eaks:-112 #eali:34 #eall:35 #eams:48 #eand:85 #eard:48 #earl:65 #ears:24
#ease:-37 #eati:30 #eave:-46 #ebaj:68 #ecal:45 #ecan:23 #echa:81 #ecio:26 #econ:86 #ecor:-29 #ecti:33 #ecto:-32
#ectr:33 #edal:158 #edde:23 #edin:26 #edle:51 #eedi:26 #eedl:51 #eels:89 #eeps:94 #eeri:112 #efon:-25 #efor:30
#egad:96 #egla:-27 #egro:42 #eite:28 #ejar:37 #ejor:-117 #elan:-47 #elea:52 #elec:29 #elef:-25 #eler:116 #eloc:69
#else:-36 #elta:24 #emad:44 #emaf:27 #embl:94 #emin:-45 #emos:-81 #empe:53 #empo:-27 #empt:55 #enan:23 #enar:106
#enas:41 #ence:58 #enda:-34 #ende:124 #endi:-169 #endo:72 #enen:-52 #enev:-31 #enfr:51 #engi:79 #engo:53 #enos:-110
#ensa:-23 #ensi:22 #enta:99 #ente:47 #entr:123 #epla:-53 #epor:-38 #equi:-42 #erad:34 #eran:-24 #erar:25 #erat:29
#erce:24 #erda:-33 #erde:173 #erdi:-37 #erec:27 #ered:-53 #eres:-42 #erfe:-62 #erhe:52 #erin:123 #erks:33 #ermo:27
#erna:33 #erne:-24 #erni:29 #eron:24 #erro:41 #ersa:82 #erse:104 #erta:-32 #ervi:66 #ervo:24 #erza:82 #esca:25
#esco:-28 #escu:79 #esde:54 #esio:50 #esnt:78 #espe:-45 #espo:39 #essa:-27 #essi:-23 #essu:52 #esta:56 #este:-27
#esto:-93 #etal:148 #eteo:41 #eter:41 #ethi:30 #etim:24 #etra:62 #etro:31 #ette:-50 #etty:29 #evas:-60 #even:23
#ever:129 #ewal:34 #eway:106 #excl:78 #exha:48 #exit:23 #expl:-29 #exts:-34 #ezco:-22 #falt:-22 #faro:39 #fast:29
#fect:-65 #feel:111 #fell:-44 #ffee:47 #fier:60 #fill:62 #filt:-24 #fing:30 #fire:-40 #firs:-61 #fixe:-102 #flas:29
#flui:-70 #flus:-59 #flyi:48 #foco:-61 #fona:-26 #foqu:46 #fore:60 #forg:-22 #form:-25 #foro:27 #forw:54 #foun:46
#fren:348 #frid:-27 #frie:61 #frio:41 #from:73 #fron:-32 #fter:64 #fuer:93 #fuga:59 #fume:39 #fuse:49 #fway:23
#gado:95 #gain:46 #game:-34 #gana:-47 #gara:40 #garo:78 #garr:58 #gaso:27 #gate:51 #gaug:24 #gear:146 #gela:57
#ghwa:35 #gine:78 #ging:66 #glan:-28 #gnal:30 #goes:72 #goin:75 #golp:91 #goma:41 #gone:-66 #good:-41 #gote:62
#grac:-28 #grad:-107 #grat:-31 #grav:32 #grea:-123 #gree:60 #grin:132 #groa:28 #grua:27 #gual:24 #guan:49 #guna:-67
#gund:32 #gust:-31 #habl:-25 #haci:49 #hada:25 #hago:-36 #haha:-52 #hake:-32 #hand:41 #hani:53 #harc:41 #hard:42
#hast:41 #haus:48 #hboa:45 #head:70 #hear:110 #heat:59 #heel:58 #help:23 #heme:-25 #hene:-31 #hera:36 #hese:-25
#hich:-91 #hift:162 #high:52 #hill:276 #himm:92 #hind:-23 #hine:49 #hini:26 #hink:94 #hisp:72 #hiss:22 #hizo:-27
#hock:-31 #hoev:-36 #hold:110 #hole:139 #home:25 #hone:-60 #hops:31 #hose:-66 #houg:38 #houl:110 #hour:-32 #hous:-29
#howe:46 #hred:23 #hree:68 #hrou:54 #hudd:33 #huel:90 #huev:25 #humb:-30 #humi:24 #humo:55 #hump:25 #hunk:74
#hurt:-23 #huts:28 #hway:35 #iapa:-78 #iaro:-51 #ible:22 #ibra:149 #ican:-28 #icen:-27 #icks:49 #icon:75 #idad:53
#iday:-25 #idea:24 #iden:-35 #ides:41 #idew:34 #idge:-35 #idle:123 #idos:-111 #iedo:28 #iemb:74 #iemp:-26 #iend:157
#iene:37 #ient:115 #ierd:116 #iere:92 #iern:-35 #ierr:61 #ifte:36 #ifts:92 #igar:-25 #ighw:35 #igna:30 #igua:27
#igue:102 #ilen:42 #iles:-31 #illo:28 #ills:129 #ilpi:45 #imad:-23 #imbi:27 #imes:39 #immi:92 #imos:-41 #impi:-106
#inbo:68 #inca:45 #indi:62 #indo:-44 #inds:63 #info:-25 #inge:25 #ings:-40 #ingu:-196 #inin:58 #inke:93 #inks:24
#inos:36 #ints:56 #intu:105 #iona:89 #ione:-31 #iono:60 #ions:-34 #iper:-170 #ippi:46 #iqui:-31 #irad:109 #irba:79
#ired:-22 #irri:28 #irst:-61 #isan:-24 #isap:26 #isas:-47 #ises:-30 #isio:-31 #isit:-61 #ismo:31 #isnt:-24 #ispa:69
#issi:25 #ista:38 #istl:22 #isto:-26 #itse:56 #itte:-30 #ittl:44 #iver:-54 #ives:-116 #ivew:87 #ivin:48 #ivoc:-35
#ixed:-102 #jaja:-91 #jalo:48 #jaro:42 #jerk:35 #join:65 #jueg:54 #jump:84 #june:-24 #junt:-36 #keep:85 #king:50
#knee:-67 #know:-30 #lace:-73 #lack:64 #lado:76 #lain:-23 #lama:36 #lamb:25 #lamo:-23 #lamp:30 #lanc:64 #lank:28
#lant:94 #larm:-51 #lash:25 #latc:60 #lati:-31 #lava:-53 #lave:22 #lder:136 #ldin:-23 #ldri:24 #leak:-37 #lean:63
#leav:-36 #lect:28 #lefo:-25 #left:-117 #lego:-58 #lenc:43 #lend:-29 #lent:92 #lept:-22 #lera:97 #lero:41 #less:-28
#lets:-30 #lfwa:23 #lgui:27 #lick:135 #lide:49 #lien:34 #lies:28 #life:-23 #ligh:48 #like:103 #limb:27 #limp:-39
#lina:26 #lind:54 #ling:50 #link:112 #liqu:-32 #litt:44 #llam:-25 #llas:-43 #lleg:-55 #ller:-52 #llow:79 #lmos:39
#loci:69 #lone:46 #long:39 #look:50 #lora:22 #lose:34 #losi:29 #lost:81 #lowi:32 #lows:95 #lpet:49 #lpip:45 #lrea:-58
#lter:26 #ltim:-32 #ltos:46 #luce:60 #lueg:-24 #luid:-70 #lumb:66 #lunk:86 #lush:-60 #lutc:25 #lyin:47 #mach:-27
#mafo:27 #maki:64 #mand:-98 #mane:54 #marc:69 #mark:67 #mate:-24 #mati:64 #mber:-25 #mbia:-81 #mbid:32 #mbin:26
#mbio:102 #mbla:74 #mbol:42 #mbra:70 #mean:-25 #meca:23 #mech:53 #mejo:-120 #mell:52 #meno:-26 #ment:-39 #mero:-34
#meta:147 #mete:94 #meth:30 #meti:27 #metr:23 #mied:28 #mies:89 #mile:-31 #mill:-23 #mina:31 #mind:-50 #misi:-24
#mism:37 #miss:-39 #mmie:89 #mofl:31 #moke:-44 #moki:-125 #mome:22 #mone:-53 #mont:-23 #morn:111 #morr:58 #most:43
#mowe:-22 #mped:30 #mpez:48 #mpia:-115 #mpin:30 #mpre:-41 #much:-51 #mush:24 #myse:-22 #nada:-64 #nail:28 #nale:98
#nana:37 #nand:68 #naro:-26 #nato:35 #nazo:-26 #ncel:-47 #ncho:28 #ncie:30 #ncon:-24 #ndan:36 #ndar:-27 #nded:-29
#ndem:-39 #nden:-44 #nder:184 #ndid:-112 #ndim:-36 #ndin:22 #ndio:51 #ndow:-40 #near:32 #nece:-48 #neci:66 #need:-37
#negr:47 #next:-116 #nfor:-34 #nfre:43 #ngan:-26 #ngel:57 #nger:32 #nges:95 #ngin:135 #ngra:-27 #ngun:-200 #nico:28
#nigh:58 #ning:-78 #nino:24 #nker:88 #nkin:35 #nner:-23 #nobo:-36 #noch:24 #nois:-122 #nomb:-26 #noon:-25 #norm:64
#nque:49 #nsio:23 #nsmi:-31 #nsto:-34 #ntan:51 #ntas:-170 #nten:-71 #ntes:-29 #ntic:57 #ntos:-23 #ntra:135 #ntre:-24
#ntur:104 #nuev:-108 #numb:-37 #nymo:39 #nyth:-50 #oard:43 #oars:22 #oast:54 #obbl:92 #obod:-36 #obre:36 #ocad:-35
#oche:60 #ocid:69 #ocks:42 #ocup:-39 #odav:-25 #oday:86 #odri:27 #oesn:78 #oeve:-36 #offe:47 #ofle:31 #ofre:24
#oiga:22 #oily:32 #oing:34 #oint:104 #oise:-82 #oisy:-40 #oked:50 #oken:58 #okin:-110 #olan:134 #oles:-27 #olin:27
#olit:24 #olor:33 #olpe:91 #ombe:32 #ombr:-27 #omes:-24 #omet:84 #omor:62 #ompl:-24 #ompr:-41 #onal:90 #onan:27
#onaz:-26 #once:-65 #onch:45 #onea:46 #oney:-46 #onfo:-23 #onga:-25 #onge:59 #ongr:-27 #onte:-67 #ooke:44 #ooks:59
#oola:68 #oone:24 #oost:28 #open:70 #opes:42 #opis:23 #oppe:107 #oqui:51 #orad:-29 #ores:-48 #orev:31 #orks:86
#orma:65 #orme:-31 #orni:109 #orqu:72 #orra:55 #orre:-28 #orri:67 #orro:70 #orry:-48 #orse:68 #orth:-28 #orwa:54
#oses:49 #osie:42 #osin:28 #oste:27 #osti:48 #otal:-40 #otan:32 #otea:56 #otho:38 #otra:24 #otro:-47 #oude:-53
#ough:169 #ould:53 #ount:-30 #ouse:-23 #over:111 #owar:58 #owed:37 #ower:85 #owin:42 #pade:36 #pads:-28 #paga:90
#pago:26 #paid:-24 #pala:22 #para:-47 #park:207 #paro:29 #parp:36 #part:-29 #pasa:48 #paso:42 #past:72 #peda:157
#peed:80 #pega:70 #pena:34 #pend:-30 #perd:-60 #perf:-62 #pero:122 #perr:-28 #pers:-134 #pete:42 #pezo:57 #phil:74
#phon:-66 #piap:-78 #pick:-22 #pier:106 #pila:57 #ping:164 #pink:34 #pipe:43 #plac:-74 #plai:-23 #plan:-99 #plas:41
#podr:22 #poin:38 #pole:46 #ponc:49 #pone:-35 #popp:56 #porq:102 #port:-38 #poth:38 #pour:25 #powe:115 #pped:90
#ppin:83 #prec:-47 #pren:162 #pres:125 #pret:26 #pric:-67 #prin:-22 #pudd:47 #pued:44 #puer:-45 #pull:-94 #puls:32
#pump:75 #purr:-31 #puse:-23 #quea:-103 #qued:-145 #quid:-31 #quis:102 #quit:-47 #quiv:-37 #raba:-72 #rabr:-56
#ract:48 #rada:79 #rade:-102 #radi:39 #rage:45 #rail:55 #rain:94 #rake:91 #ramp:43 #ranc:87 #rank:99 #rant:-23
#rapi:27 #raro:59 #rast:32 #ratc:-53 #rate:63 #rati:38 #rato:-43 #ratu:-22 #rave:31 #raya:-22 #raye:39 #razy:40
#rbag:76 #rcha:108 #rche:22 #rdad:-24 #rdie:-32 #reak:-73 #real:60 #ream:-40 #rear:60 #reas:-49 #reat:-78 #reca:71
#rech:24 #reci:-59 #reco:-34 #redd:29 #reen:64 #reet:40 #rega:55 #regl:-36 #rell:22 #rely:40 #remi:-97 #rena:207
#rend:159 #reno:71 #repl:-55 #repo:-51 #resi:50 #ress:90 #rest:-35 #rete:30 #retr:58 #reve:198 #rfec:-62 #rhea:52
#rice:-68 #rida:-27 #ride:-44 #ridg:-35 #rido:28 #rien:125 #ries:22 #righ:-119 #rill:28 #rinc:56 #rind:132 #ring:85
#risa:-56 #risi:24 #rite:-22 #rivi:57 #rmal:59 #rmom:38 #rnat:35 #rnes:-35 #rnig:30 #rnin:74 #road:-24 #roan:28
#roar:22 #rock:73 #roja:30 #rojo:47 #roke:92 #rona:23 #rook:44 #ropp:26 #rops:77 #roug:123 #rpad:36 #rque:54 #rran:73
#rras:32 #rreg:-36 #rret:32 #rrie:63 #rros:-35 #rsda:-26 #rsec:47 #rted:47 #rtes:-40 #rtie:-24 #ruck:66 #rued:44
#ruen:51 #ruid:-26 #runn:29 #rvir:79 #rwar:53 #saba:-31 #sada:-34 #sado:-26 #said:-58 #sald:24 #sale:115 #sali:41
#sand:-32 #sapp:26 #says:79 #scab:61 #scom:-24 #scra:-52 #scre:43 #scuc:30 #sday:-45 #seas:-25 #seat:110 #seco:104
#sect:47 #seda:-30 #self:31 #send:-44 #sera:44 #serv:87 #shbo:45 #shes:28 #shie:26 #shif:162 #shim:92 #shin:57
#shoc:-31 #shop:-50 #shou:109 #show:40 #shre:23 #shud:33 #shut:120 #side:64 #sien:70 #sign:52 #sigu:97 #sile:42
#sing:83 #sion:28 #skip:-35 #slep:-22 #slic:92 #slid:82 #slip:46 #slow:44 #smel:52 #smis:-31 #smok:-168 #sobr:48
#soft:27 #sola:34 #sold:-27 #soli:39 #solo:39 #some:35 #sorr:-55 #soun:-39 #spar:72 #spas:69 #spec:-25 #spee:80
#sper:-29 #spit:26 #spon:29 #sque:-120 #squi:35 #ssur:52 #stac:58 #stal:50 #stan:-92 #star:-49 #stas:24 #stat:-30
#stay:60 #stea:54 #stee:125 #step:66 #ster:32 #stic:71 #stil:36 #stim:-25 #stom:-30 #stop:74 #stoy:-56 #stre:51
#stuf:44 #sube:34 #subi:83 #suen:-33 #susp:23 #symb:41 #taci:56 #tail:151 #take:50 #tale:-34 #talk:-49 #tall:71
#tamb:62 #tand:71 #taro:-28 #tati:-22 #team:43 #teer:128 #tele:-32 #tely:115 #temp:120 #teng:33 #tent:-55 #tera:31
#terc:26 #tere:-31 #tern:24 #ters:64 #test:32 #text:-96 #than:-35 #them:-30 #ther:34 #thes:-26 #they:-72 #thol:38
#thos:-83 #thre:59 #thro:54 #tick:32 #tico:49 #tiem:55 #tien:-26 #tier:-23 #tigh:29 #tima:-52 #ting:52 #tion:32
#tira:165 #tire:26 #tlin:-22 #toda:95 #todo:-70 #toma:-38 #tomo:53 #tope:54 #topi:23 #tops:31 #tora:-25 #tors:-24
#tory:-23 #tosi:42 #tota:-40 #towa:58 #trab:-68 #trac:100 #trad:-25 #trae:140 #trai:45 #tran:114 #trar:66 #trat:-28
#tree:47 #tric:33 #trie:28 #tron:36 #truc:63 #true:50 #tsel:56 #tter:-67 #ttin:24 #ttle:52 #tuff:44 #tula:-29
#turn:226 #tuvi:57 #twic:107 #uand:40 #uatr:-23 #ubic:-41 #ubid:63 #uces:35 #ucho:32 #udde:58 #uddl:47 #uder:-53
#ueak:-170 #ueal:51 #ueda:29 #uedo:-80 #uego:34 #uele:79 #uelo:22 #uelv:-23 #uema:47 #ueme:-22 #uena:27 #uent:-25
#uerz:81 #uesd:-30 #uest:35 #uete:25 #ueva:-84 #uido:-51 #uier:66 #uiet:-25 #uish:41 #uiso:70 #uita:44 #uite:-26
#uito:52 #uivo:-37 #ulde:125 #ulle:-73 #ulls:52 #ulti:-33 #umbe:-56 #umbi:32 #umbl:25 #umbr:81 #umbs:-30 #umes:39
#umit:24 #umpe:35 #umps:65 #unda:41 #unde:140 #unds:-86 #unge:110 #unki:33 #unni:29 #unqu:41 #unst:-34 #unta:-24
#uphi:74 #urge:27 #urin:30 #urni:68 #urns:160 #urrs:-30 #ursd:-26 #urva:31 #usad:-26 #usan:-38 #ushi:26 #uspe:23
#uste:-51 #usto:-44 #utch:22 #utop:23 #utte:-27 #uvie:53 #vaca:-33 #vaci:37 #vado:-43 #vapo:40 #vece:52 #velo:70
#vend:-128 #vent:26 #verd:34 #vere:-67 #verh:52 #vern:30 #vers:96 #very:26 #vewa:87 #vibr:154 #vien:43 #ving:28
#visa:-24 #visi:-68 #voca:-35 #vola:67 #wall:105 #ward:111 #warn:-105 #wate:27 #went:153 #were:-83 #wful:30 #what:-90
#whee:58 #when:28 #wher:36 #whic:-97 #whin:73 #whis:22 #whoe:-36 #whol:97 #wice:107 #wild:-29 #will:-91 #wing:42
#wipe:-177 #wire:81 #with:-111 #wobb:92 #wont:65 #wors:67 #wort:-22 #woul:-41 #writ:-22 #wron:-24 #xcla:78 #xhau:48
#yeah:-31 #year:-45 #ying:47 #ymbo:41 #ymor:39 #your:-144 #ysel:-22 #ythi:-70 #zumb:40 %again_later:-26
%again_later%away:-39 %again_later%busy:-47 %again_later%call_off:-26 %again_later%car:-46 %again_later%car_part:102
%again_later%do_it:64 %again_later%elsewhere:-41 %again_later%fails:93 %again_later%family:-37
%again_later%gone_car:55 %again_later%leak:40 %again_later%leave_me:69 %again_later%lift:-32 %again_later%message:-51
%again_later%noise:179 %again_later%odometer:-27 %again_later%on_way:-33 %again_later%opening:-25
%again_later%phone:40 %again_later%question:-40 %again_later%refuse:48 %again_later%season:-60 %again_later%shake:82
%again_later%shift_it:-56 %again_later%smoke_smell:46 %again_later%start_again:75 %agree:-82 %agree%away:49
%agree%bad:69 %agree%car:-56 %agree%do_it:-37 %agree%doubt:-64 %agree%elsewhere:43 %agree%family:-22
%agree%gone_car:-25 %agree%leak:47 %agree%message:-23 %agree%money:51 %agree%noise:29 %agree%on_way:64
%agree%place:48 %agree%question:133 %agree%refuse:36 %agree%shake:152 %agree%smoke_smell:93 %agree%thanks:-28
%agree%wrong_one:36 %away:-96 %away%bad:33 %away%bring:-22 %away%busy:-48 %away%call_off:-54 %away%car_part:75
%away%do_it:-29 %away%money:23 %away%noise:52 %away%question:-42 %away%refuse:-51 %away%smoke_smell:44 %bad:-49
%bad%call_off:-41 %bad%car:-39 %bad%car_part:-52 %bad%fails:-30 %bad%leak:54 %bad%machine:39 %bad%meaning:43
%bad%money:34 %bad%noise:37 %bad%shake:59 %bad%staff:-27 %bring:-140 %bring%call_off:60 %bring%car:30
%bring%car_part:121 %bring%elsewhere:-30 %bring%fails:41 %bring%how_long:29 %bring%leak:22 %bring%leave_me:105
%bring%message:-29 %bring%noise:38 %bring%on_way:22 %bring%opening:-22 %bring%place:87 %bring%question:163
%bring%refuse:60 %bring%shake:26 %bring%smoke_smell:33 %bring%start_again:46 %busy:-81 %busy%call_off:-56
%busy%car:-23 %busy%noise:36 %busy%question:33 %busy%refuse:-44 %busy%shake:33 %busy%shift_it:39
%busy%smoke_smell:-30 %call_off%do_it:55 %call_off%elsewhere:-22 %call_off%fails:-119 %call_off%how_long:70
%call_off%leak:-26 %call_off%leave_me:102 %call_off%meaning:35 %call_off%message:-46 %call_off%money:61
%call_off%noise:-44 %call_off%odometer:-118 %call_off%on_way:62 %call_off%phone:101 %call_off%place:50
%call_off%question:-28 %call_off%refuse:32 %call_off%shake:64 %call_off%shift_it:38 %call_off%smoke_smell:-25
%call_off%who:-24 %call_off%wrong_one:-29 %car:79 %car%car_part:41 %car%elsewhere:-36 %car%fails:241 %car%family:-38
%car%gone_car:-90 %car%leave_me:65 %car%lift:-69 %car%noise:128 %car%odometer:23 %car%pay_day:52 %car%place:44
%car%question:37 %car%refuse:-37 %car%shake:78 %car%shift_it:51 %car%smoke_smell:35 %car%start_again:45
%car%thanks:-25 %car%wrong_one:-103 %car_part:402 %car_part%do_it:-193 %car_part%doubt:106 %car_part%family:-84
%car_part%how_long:85 %car_part%leak:92 %car_part%leave_me:191 %car_part%machine:45 %car_part%money:-72
%car_part%noise:-200 %car_part%odometer:41 %car_part%on_way:126 %car_part%opening:112 %car_part%pay_day:26
%car_part%phone:93 %car_part%place:120 %car_part%shake:176 %car_part%smoke_smell:189 %car_part%staff:-89
%car_part%start_again:85 %car_part%thanks:-30 %do_it:-122 %do_it%doubt:31 %do_it%fails:35 %do_it%family:-24
%do_it%gone_car:-33 %do_it%how_long:29 %do_it%leak:87 %do_it%leave_me:42 %do_it%on_way:53 %do_it%question:25
%do_it%refuse:91 %do_it%shake:26 %do_it%shift_it:75 %do_it%smoke_smell:23 %do_it%start_again:51 %do_it%wrong_one:-55
%doubt:63 %doubt%elsewhere:66 %doubt%money:26 %doubt%noise:53 %doubt%on_way:68 %doubt%shift_it:30 %doubt%wrong_one:43
%elsewhere:-72 %elsewhere%fails:103 %elsewhere%leak:25 %elsewhere%lift:-29 %elsewhere%phone:47 %elsewhere%place:47
%elsewhere%refuse:-53 %elsewhere%shift_it:-29 %elsewhere%smoke_smell:-24 %elsewhere%staff:35 %fails:551
%fails%gone_car:97 %fails%how_long:49 %fails%leak:43 %fails%leave_me:-141 %fails%meaning:35 %fails%on_way:56
%fails%pay_day:41 %fails%phone:65 %fails%place:128 %fails%question:66 %fails%refuse:99 %fails%shake:-38
%fails%smoke_smell:-102 %fails%staff:40 %fails%start_again:45 %fails%who:-61 %fails%wrong_one:213 %family:-89
%family%gone_car:-29 %family%meaning:-22 %family%odometer:-49 %family%smoke_smell:-23 %family%staff:77 %gone_car:-169
%gone_car%leave_me:33 %gone_car%noise:37 %gone_car%shift_it:-22 %gone_car%start_again:47 %gone_car%wrong_one:-24
%how_long:-34 %how_long%noise:73 %how_long%opening:-23 %how_long%question:-50 %how_long%shake:35
%how_long%start_again:44 %how_long%who:-22 %leak:354 %leak%meaning:33 %leak%money:30 %leak%on_way:67
%leak%question:139 %leak%refuse:-81 %leak%smoke_smell:-47 %leak%wrong_one:-36 %leave_me:-63 %leave_me%message:-66
%leave_me%noise:45 %leave_me%phone:51 %leave_me%place:42 %leave_me%question:60 %leave_me%refuse:37
%leave_me%season:-43 %leave_me%smoke_smell:-54 %leave_me%start_again:68 %leave_me%wrong_one:51 %lift:-74
%lift%on_way:32 %lift%place:60 %lift%refuse:-47 %machine:31 %machine%meaning:41 %machine%shake:44
%machine%wrong_one:39 %meaning%odometer:-33 %meaning%phone:36 %meaning%question:-31 %meaning%refuse:36
%meaning%shake:63 %meaning%staff:29 %message:-167 %message%place:-31 %message%question:-29 %message%start_again:-55
%money:-104 %money%noise:141 %money%refuse:50 %money%smoke_smell:68 %noise:476 %noise%odometer:95 %noise%on_way:100
%noise%pay_day:30 %noise%phone:64 %noise%place:54 %noise%question:299 %noise%refuse:61 %noise%shake:-30
%noise%shift_it:124 %noise%smoke_smell:-47 %noise%staff:39 %noise%start_again:111 %noise%wrong_one:120 %odometer:-37
%odometer%on_way:23 %odometer%place:75 %odometer%question:-27 %odometer%refuse:-38 %odometer%shift_it:-28
%odometer%staff:24 %odometer%start_again:23 %on_way:-50 %on_way%phone:33 %on_way%place:-26 %on_way%question:78
%on_way%refuse:-43 %on_way%shake:43 %on_way%smoke_smell:36 %on_way%staff:27 %on_way%start_again:51
%on_way%wrong_one:41 %opening%shift_it:-25 %pay_day:-58 %phone:-43 %phone%place:56 %phone%question:-62
%phone%refuse:43 %phone%shift_it:-27 %phone%smoke_smell:36 %phone%staff:30 %phone%start_again:54 %phone%who:-38
%phone%wrong_one:49 %place:41 %place%question:30 %place%refuse:62 %place%shake:28 %place%who:-46 %place%wrong_one:41
%question:-103 %question%refuse:44 %question%season:-24 %question%shake:185 %question%shift_it:70
%question%smoke_smell:104 %question%start_again:-64 %question%who:-63 %refuse:-77 %refuse%shift_it:76
%refuse%start_again:86 %refuse%wrong_one:105 %season:-145 %season%shift_it:-27 %season%smoke_smell:-48 %shake:531
%shake%shift_it:28 %shake%start_again:27 %shift_it:29 %shift_it%smoke_smell:23 %shift_it%wrong_one:33
%smoke_smell:441 %smoke_smell%start_again:22 %smoke_smell%who:-31 %smoke_smell%wrong_one:26 %staff:-38
%staff%wrong_one:23 %thanks:-108 %who:-161 %wrong_one:-116 @?:-165 @after_visit:22 @car:-81 @confirm_stop:-152
@later:-131 @nothing:25 @odometer:-44 @offers:-70 @reading:-134 @time:-42 @times:-127 @walk_in:-54 ^_a:-78
^_airbag:62 ^_all:-24 ^_anda:76 ^_ando:-65 ^_ayer:26 ^_baja:-83 ^_battery:45 ^_both:43 ^_cada:27 ^_can:-135 ^_cant:61
^_car:204 ^_check:22 ^_como:-51 ^_congratulations:-27 ^_coolant:52 ^_could:-24 ^_cranks:55 ^_cual:-27 ^_cuando:-73
^_cuanto:-44 ^_de:-59 ^_dead:-32 ^_desde:23 ^_dice:44 ^_do:-52 ^_donde:-64 ^_el:146 ^_en:-53 ^_engine:24 ^_estan:-23
^_estoy:-57 ^_feels:44 ^_fire:-52 ^_flat:-42 ^_found:65 ^_go:-34 ^_going:-52 ^_hace:45 ^_hay:69 ^_headlights:34
^_heard:46 ^_hit:-117 ^_how:-147 ^_hoy:68 ^_huele:41 ^_i:-130 ^_id:-59 ^_if:-68 ^_ill:-59 ^_im:-104 ^_is:-251
^_it:112 ^_just:-57 ^_key:61 ^_la:129 ^_las:116 ^_le:146 ^_let:-35 ^_lets:-22 ^_lo:-23 ^_lost:97 ^_manana:29
^_mande:-29 ^_mas:-90 ^_meh:-34 ^_my:69 ^_no:-72 ^_not:-43 ^_on:-87 ^_one:54 ^_para:-37 ^_pedal:27 ^_pink:33
^_por:-41 ^_pull:-48 ^_que:-169 ^_quede:-84 ^_quedo:-30 ^_quiero:-24 ^_quit:-91 ^_rear:58 ^_running:50 ^_se:-96
^_seat:33 ^_second:37 ^_shake:-57 ^_she:33 ^_si:43 ^_smells:22 ^_smoke:-43 ^_something:-23 ^_sounds:-83 ^_start:-166
^_steering:45 ^_still:-54 ^_stop:-132 ^_stuck:-59 ^_su:-25 ^_suena:-57 ^_sure:-35 ^_takes:24 ^_tell:-22 ^_temp:25
^_tengo:47 ^_that:-40 ^_the:77 ^_there:133 ^_they:-47 ^_this:-38 ^_thursday:29 ^_tiembla:47 ^_tiene:101 ^_tienen:-23
^_tire:84 ^_todo:-74 ^_tomorrow:30 ^_too:-34 ^_took:29 ^_trae:160 ^_traffic:-29 ^_traigo:23 ^_unstop:-32 ^_venden:-48
^_vibra:27 ^_we:-39 ^_were:-27 ^_what:-143 ^_wheel:27 ^_when:-121 ^_whenever:-27 ^_where:-30 ^_which:-77 ^_whole:76
^_why:-28 ^_will:-57 ^_wipers:-51 ^_wont:-32 ^_would:-22 ^_y:-76 ^_ya:-90 ^_yes:93 ^_you:-132 ^_your:-36 a:99
a__and:93 a__at:27 a__belt:-25 a__book:-29 a__can:23 a__de:-34 a__fluid:-27 a__for:-23 a__in:111 a__is:25 a__now:-56
a__on:36 a__out:-29 a__sale:-38 a__since:-23 a__sound:32 a__tire:-43 a__under:-41 a__with:25 a_bit:35 a_coffee:49
a_como:-68 a_flat:31 a_gasolina:29 a_hacer:-29 a_jump:45 a_la:31 a_las:-69 a_line:-26 a_little:29 a_mi:-49 a_plan:-67
a_pothole:33 a_quemado:24 a_ride:-25 a_rip:27 abajo:156 abajo_$:119 able:-28 able_to:-28 about:26 about_the:-22
about_to:79 abre:25 acelerador:47 adelante:-123 adelante_$:-123 adentro:30 after:33 after_a:35 after_i:55
after_the:-25 again:47 again_$:-56 again__i:23 agarra:73 agradece:-71 agradece_$:-47 agua:203 agua_$:112 agua__el:-25
agua_por:40 aguanta:53 aguanta_$:49 ahead:-49 ahead_and:-23 ahora:53 air:85 airbag:79 airbag_light:25 aire:57 al:88
al_cien:-32 al_dar:25 al_frenar:52 al_rato:-31 alarm:-32 algo:92 alguien:27 all:40 all_$:-36 all__on:39 all__the:46
all__way:63 all_good:-53 all_of:23 all_over:47 all_the:71 alla:-24 almost:39 along:50 already:-58 already_$:-30
also:94 alternator:35 alto:24 alto_$:23 altos:39 altos_$:39 alumbran:70 am:-31 am_i:-33 amanecio:66 amanecio_sin:35
amber:40 an:-58 and:239 and__back:40 and__doesnt:-32 and__dont:44 and__is:46 and__it:29 and__no:50 and_i:27 and_it:75
and_now:92 and_the:113 and_then:26 anda:155 anda_tosiendo:34 andan:33 ando:-120 ando__en:-28 ando_en:-25 anoche:46
anticongelante:57 anticongelante_$:52 anymore:39 anything:-49 apaga:56 apago:31 apenas:39 aqui:-49 aqui_$:-48 are:-54
are__again:-53 are__the:-36 are__to:77 are_about:74 are_in:-49 arranca:28 arrancar:39 arrancar_$:27 arrastrando:25
arrastrando_$:24 arreglan:-28 as:-60 as_butter:-22 ask:-59 ask_me:-28 at_$:27 at__speed:26 at__the:-27 at_all:-42
at_idle:37 at_my:-32 at_stop:47 at_work:-50 aunque:41 autopista:23 away:72 awful:30 ayer:68 azul_$:-28 bache:30
back:-24 back_$:-49 back__the:-22 back_end:59 bad:43 baja:-106 baja_$:-23 baje:38 baje_la:39 bald:41 ball:68
barely:40 bateria_no:71 battery_was:34 be:-229 be__to:-27 be_able:-26 be_there:-69 bearing:-27 been:54 been__since:22
been_on:30 before:30 belt_and:-40 best:-23 best_$:-22 better:-39 better_$:-37 bien:-50 bien_$:-130 bien_con:-49
bike:-58 bill:-34 black:64 blanco:48 blew:38 blinker:91 blowing:22 blue:25 book:-42 book_it:-24 bota:26 both:51
box:29 box_$:40 brake:27 brake_$:44 brake__flush:-40 brake_fluid:-49 brake_job:-50 brakes_$:-106 brakes__a:24
brakes__grinding:31 brakes__like:26 brakes__stop:44 brakes_are:50 brakes_dont:23 break:-74 brinca:39 bring:-49
broke:36 broken:59 bumper_$:37 bumps:52 bumps_$:42 burning:66 but:232 but__brakes:52 but__is:98 but__wont:27
but_it:119 but_my:41 but_the:64 but_there:51 butter:-27 butter_$:-25 by_itself:41 by_the:62 cada:92 cada_dia:25
cadena:31 calendar:-24 calento:27 calienta:55 call_me:48 calle:-35 cambiaron:-51 cambiaron_la:-31 cambio:-37
cambio__aceite:-24 cambio_de:-28 cambios:139 came:78 came_back:26 came_off:24 came_on:126 came_up:-54 camina:30
can:47 can__a:27 can__check:-36 can__come:24 can__drive:-33 can__me:56 can__move:-27 can_i:-96 can_see:55 can_we:-37
cancel:-41 cancel_$:-31 cant:43 cant__in:31 cant__it:41 cant_get:70 cant_stop:34 cap:-38 car:55 car__i:-24
car__the:-24 car_is:-26 car_just:44 car_wont:24 care:-22 care_of:-22 carga:53 carretera:32 carretera_$:27 carro:76
carro_$:-24 carro__como:71 carro_anda:24 carro_no:37 carros:-24 casa:-76 casi:112 casi_no:90 caso_$:-23 catches:60
catches_$:60 change:-29 charco:41 charge_to:23 check_engine:41 check_the:-32 chispas:69 chunk:24 cien:-33 cien_$:-24
cita:-37 cita_$:-47 climbing:27 clunk:33 clunking:33 clutch:25 cochera:37 coffee:49 cofre:25 cold:56 cold_$:22
come:-53 come_$:-27 come_in:-48 comes:-24 coming_$:-34 coming_out:25 como:89 como_de:41 como_no:-30 como_sale:-38
compre:-33 con__frenos:-47 con_fierro:36 con_las:-27 con_un:-28 congratulations:-27 congratulations_you:-24
contento:-47 coolant:68 corriente:68 covered:-51 covered_$:-41 crank:34 cranks:62 crazy:40 crooked:44 cual:-39
cual_es:-26 cuando:41 cuando__vuelta:33 cuando_doy:33 cuando_freno:23 cuando_se:-22 cuanto__el:-26 cuanto__tardan:22
cuanto_dura:-22 cuatro:-23 cuesta:45 cut:25 da:93 da_miedo:28 dar:53 dash:39 dash_$:25 dash__black:26 dash_went:28
date:-26 date_$:-23 day:-51 days:45 days_$:42 de:-80 de__bateria:35 de__llanta:-49 de__o:-25 de_abajo:73
de_aceite:-29 de_agua:64 de_baja:-31 de_la:-31 de_las:-32 de_los:-48 de_que:-35 deal:-23 dealer:-22 debajo:68
debajo_del:50 dejaron:26 dejo:-25 dejo_$:-24 del:59 del__esta:34 del_aceite:42 del_carro:29 desde:54 desde_el:27
desde_que:22 desk:-36 dia:-31 dice:61 dice_que:58 did:-88 did__brakes:-27 did_it:-30 died:86 died__the:48 died_on:27
dim:24 direccion:-109 direccion_$:-91 direccion__favor:-38 direccion_por:-38 direccionales:98 do:-124 do_i:-66
do_it:-29 does__a:62 does_a:-41 does_it:-25 doesnt:78 doesnt__anymore:33 doing:-41 done:-26 dont:58 dont_see:30
door:-185 door_$:-109 dos:38 dos_veces:28 down:138 down_$:-42 down__street:48 down__the:66 down_on:71 doy:30
doy_vuelta:33 dream:-54 drive:102 drive_$:158 drive_it:-39 drive_through:22 driver:-24 drives:-145 drives__as:-58
drives_like:-84 driveway:82 driveway_$:70 driving:57 driving_$:33 drop:-32 dropped:33 drops:77 dry:-26 duro:-32 e:23
e_brake:23 echa:28 echando:-22 echeme:-25 el:94 el__a:-74 el__anda:23 el__de:-42 el__del:30 el__no:106 el__pero:58
el__se:134 el__va:67 el__y:49 el_aceite:-64 el_acelerador:47 el_anticongelante:54 el_cambio:-25 el_carro:57 el_de:-54
el_foquito:38 el_freeway:-33 el_freno:88 el_humo:-29 el_jueves:-32 el_martes:-23 el_mofle:31 el_motor:31 el_pedal:49
el_que:-24 el_radiador:22 el_ruido:-34 el_sabado:-23 el_taller:-22 el_trabajo:-71 el_viernes:-32 el_volante:79
empezo:57 empezo_a:57 en:78 en__altos:39 en__calle:-26 en__carretera:32 en__casa:-51 en__cochera:30 en__freeway:-31
en__mananas:29 en__puerta:-30 en_frio:28 en_la:-22 en_las:113 en_los:66 en_que:-37 en_un:-24 end:85 enfrente:43
enfrente_$:30 engine:68 entran:117 entrar:63 entrar_a:22 entro:-39 entro_$:-33 equivocado:-34 equivocado_$:-29
era:-52 es:-49 es_$:-59 es__que:24 es_la:-22 es_que:55 eso:-100 eso_$:-28 esta:69 esta__la:-43 esta_baja:-27
esta_muy:-22 estaciono:60 estan:-81 estan_$:-66 estimado:-22 estoy:-56 every:50 every__light:-116 every_morning:66
every_red:-116 ex:-28 exclamation:70 exclamation_mark:63 exhaust:48 exit:23 faster:22 favor_$:-47 feel_like:-25
feels:130 feels_like:68 fell:-28 fell_off:29 fierro:65 fierro_$:23 fierro__fierro:36 fierro_con:36 fill:36 filled:22
filled_it:24 fine_$:-53 fine_but:30 finger:32 fire:-44 first:-61 first_$:-74 fix:33 fixed:-102 fixed_$:-33
flashing:30 flat__the:65 flat_on:46 flat_out:-49 fluid:-68 fluid_$:-35 fluid_flush:-40 flush:-59 flush_$:-44
flying:48 foco:-65 foquito:46 for:-124 for__brakes:-39 for__first:24 for_a:28 for_the:-60 forever:31 forever_to:57
forward:54 found:46 found_a:56 free:-29 freeway_$:42 frena:101 frenar:103 frenar_$:81 freno:147 freno_$:45 frenos:-69
frenos_$:-103 frenos_y:22 friday_$:-25 friday__it:23 friday_also:37 friday_at:-31 friend:67 frio:41 frio_$:41 from:73
from__back:24 from__the:61 from_the:28 from_under:59 front:-30 front_desk:-32 front_tire:24 fue:-75 fue_la:-48
fuerza:82 fuga:99 fuga_de:48 fumes:39 garage:47 gas:-26 gasolina:27 gauge:24 gear:112 gear_$:62 get:88 get__on:46
get__to:22 get_it:88 get_my:-25 go:100 go_$:57 go_ahead:-33 goes:72 going:75 going_on:-26 going_to:-141 going_up:54
going_uphill:73 golpeteo:41 goma:49 gone:-66 gone_$:-32 good:-50 good_$:-45 got:29 got__flat:49 got_a:53 got_it:-24
gotea:31 gps:-22 gracias:-39 gracias_$:-70 grave:24 grease:-35 great:-77 great__the:-55 green:65 grinding:67
grinds:45 grua:27 gusto:-34 guy:-59 hablar:24 hace:107 hace_ningun:-35 hace_un:64 hacen:-65 hacer:-38 haciendo:39
had:45 had__get:56 had_a:-30 had_to:97 hago:-36 haha:-51 haha_$:-34 halfway:23 hanging:40 happens__i:-24
happens_if:-24 hard:38 hard_to:30 has:-57 has__on:33 has_a:-49 has_been:35 hasta:41 hasta_el:31 hasta_que:-27 hay:47
hay_que:34 headlights:108 hear:62 heard:49 heard_a:46 help:23 help_$:-45 help__stuck:59 help_im:59 here:-113
here_$:-68 hi:-35 hi_$:-33 highway:35 highway_$:22 hill:71 hill_$:57 hills:128 hills_$:108 his:-65 his_bike:-54
hit:-64 hit__pothole:34 hit_a:39 hizo:-27 hold:112 hold_the:28 home:25 hood_$:-44 hora:-56 hora_$:-46 hot:36 how:-143
how__for:-22 how__is:-43 how__to:39 how_low:-48 how_much:-39 hoy:129 hoy__manana:-45 hoy_mismo:27 hoy_no:43 huele:84
huele__huevo:22 huele_a:70 huevo:25 hum:30 humito:24 humo:55 humo__al:23 humo_blanco:30 humo_negro:37 hurt:-23 i:39
i__a:73 i__be:-77 i__down:24 i__hear:35 i__in:-27 i__it:-73 i__like:-35 i__my:30 i__on:44 i__see:83 i__smoking:-60
i__that:41 i__the:26 i__who:-37 i_came:-29 i_can:75 i_come:-25 i_dont:31 i_drop:-25 i_fill:37 i_get:-75 i_have:63
i_hit:80 i_just:-23 i_know:-35 i_left:-39 i_moved:38 i_need:-71 i_park:75 i_press:37 i_pulled:-24 i_quit:-60
i_skip:-25 i_slow:26 i_stop:39 i_stopped:26 i_think:149 i_turn:27 i_was:-31 i_wont:-100 i_work:-23 id:-63 id__to:-45
id_like:-48 idea:24 idle:123 idle_$:30 if:-52 if__skip:-25 if_it:-50 igual:33 ill:-122 ill__it:-40 ill__you:-30
ill_do:-25 ill_let:-31 im:-30 im__my:-41 im__on:34 im__the:-27 im_down:-43 im_good:53 im_on:-42 im_stuck:60 in:24
in_$:-70 in__bit:-25 in__car:-32 in__garage:30 in__is:-33 in__middle:24 in__morning:-35 in__now:59 in__shop:-23
in__sidewall:33 in_a:47 in_it:-31 in_park:77 in_second:88 in_time:34 in_traffic:30 interested:-26 interested_$:-25
intersection:47 into_the:-32 is:98 is_$:-39 is__brake:-61 is__but:30 is__car:-29 is__in:43 is__like:33 is__line:-25
is__out:32 is__the:-94 is_a:-30 is_at:-34 is_cold:25 is_fixed:-50 is_getting:24 is_going:44 is_gone:-60 is_got:24
is_in:-58 is_it:-182 is_leaking:38 is_making:42 is_no:-29 is_on:32 is_own:42 is_perfect:-30 is_shaking:46
is_something:-31 is_stuck:38 is_the:-79 is_there:-35 is_this:-27 is_totaled:-22 isnt:-24 it:165 it_$:-228 it__a:-50
it__and:25 it__cold:25 it__down:49 it__got:24 it__i:-31 it__in:-36 it__into:25 it__like:-27 it__over:22 it__own:42
it__smoking:-25 it__start:22 it__started:27 it__that:22 it__the:-99 it__then:51 it__to:-61 it__totaled:-23
it__when:54 it_a:-28 it_back:-41 it_died:37 it_does:80 it_doesnt:-30 it_friday:-33 it_in:-39 it_just:30 it_like:-50
it_makes:48 it_off:-41 it_on:-66 it_over:-38 it_pulls:28 it_shakes:49 it_starts:-40 it_still:79 it_takes:30
it_turns:33 it_twice:30 it_up:-31 it_was:-24 it_when:-25 it_wont:85 itself:56 itself_$:24 jaja:-76 jaja_$:-51
jalonea:29 jerks:33 job:-68 juego:54 jueves_$:-42 jueves_a:-22 jueves_pero:26 jump:40 june:-24 just__in:22
just__on:55 just_died:44 k:-31 k_$:-29 keeps:86 key:61 key_turns:61 kid:-55 kid__a:-43 kid_has:-53 knee:-64 knock:-35
knocking:23 know:-29 know__to:-26 know_who:-37 la__amanecio:28 la__de:47 la__del:35 la__esta:23 la__hoy:-37
la__no:112 la__se:61 la__trae:24 la__vez:-26 la__y:-65 la_autopista:23 la_bateria:39 la_carretera:32 la_casa:-57
la_cita:-34 la_cochera:31 la_goma:48 la_hora:-55 la_llanta:91 la_manana:-23 la_otra:-27 la_palanca:30 la_pila:60
la_puerta:-24 la_reversa:67 la_rueda:51 la_segunda:28 la_suspension:24 la_ultima:-27 la_velocidad:38 lado:88
lado_$:35 largo:27 largo_$:23 las:171 las_$:-45 las__ya:33 las_llantas:-52 las_luces:61 las_mananas:29 last:-65
last_night:49 last_year:-50 latch:60 latch_$:58 late:-102 late_$:-90 lately:101 lately_$:94 lavadora:-45 le:98
le__a:-65 le__cuando:68 le__la:-23 le__un:62 le_cambiaron:-29 le_cuesta:60 le_sale:100 le_van:-26 leak:-54
leak_is:-37 leaking:48 leaks:-43 leaks_no:-62 leave:-27 left:-117 left_$:-25 left__the:-26 left_a:-98 left_blinker:91
left_on:-29 left_rear:28 left_the:-24 let__know:-32 let_go:94 let_me:-43 let_you:-28 lets:-30 light:25 light__on:76
light_came:66 light_is:69 lights:-73 lights_$:-101 like:106 like__in:67 like__is:35 like__on:43 like__plan:-67
like_a:34 like_crazy:41 like_to:-41 limpiaparabrisas:-78 line:25 line_$:38 liquido:-31 lit:22 little:44 little_$:31
llanta:148 llanta_$:-33 llanta__una:28 llanta_trae:24 llantas:-151 llantas_$:-76 llego:-57 llego_$:-47 llevo_la:-23
lo:-103 lo__a:-27 lo__la:-25 lo_hago:-22 lol:-221 lol_$:-174 look_like:23 looks:60 loose:-48 loose_$:-46 los:109
los__estan:33 los__no:27 los__rechinan:-64 los__se:34 los_altos:39 los_cambios:136 los_ninos:36 losing:33 lost:81
lost_all:44 lot:-46 loud:27 louder:-53 low:-31 low_$:-46 luces:35 luego:-24 lug:88 luz:-63 luz__la:-44 make:-89
make_it:-86 makes:80 makes_the:42 making:64 making_a:46 manana_$:-41 mananas:29 mananas_$:33 manda:-24 mande:-31
marcha:124 marcha_$:93 mark:63 martes:-30 martes__el:-46 martes__le:43 martes_pero:38 mas:-78 mas_adelante:-94 me:-25
me_$:99 me__el:-88 me__en:26 me__hablar:23 me__la:-50 me__los:28 me__que:56 me__sin:23 me__the:-27 me__tirado:27
me__un:-31 me__una:-31 me_da:-31 me_dejaron:-50 me_dejo:22 me_gusto:-22 me_manda:-23 me_poncho:26 me_puede:29
me_quede:114 me_sale:23 me_tuvieron:52 me_up:-33 me_va:49 me_when:-22 mean:-26 mean_on:-39 mechanic:53 meh:-34
mejor:-116 mejor__jueves:-23 mejor_el:-25 menos:-26 metal:106 metal_$:61 metal__metal:29 mi:-99 mi__esta:-23
mi_carro:46 mi_ex:-24 middle__the:32 miedo:28 mil:-55 miles:-30 min:-148 min_$:-104 min_late:-27 mis:-35 mismo:31
miss:-42 miss_it:-34 mofle:31 monday_$:-34 monday__it:29 monday_but:27 money:-45 more:-31 morning:69 morning_$:85
mornings:34 motor_$:30 move:-28 moved__seat:38 mph:31 much:-61 much__a:-28 much_for:-22 much_is:-29 much_to:27
mucho:22 mucho_para:31 muy:-114 muy_contento:-44 my:-92 my__car:-29 my__fell:-46 my__going:-25 my__has:-73 my__in:-31
my__is:51 my__keeps:44 my__look:32 my__wont:51 my_brakes:94 my_car:-24 my_door:-34 my_driveway:60 my_kid:-55
my_mechanic:83 my_number:-26 my_oil:35 my_old:-24 my_seat:-23 my_street:58 my_tire:53 my_tires:77 my_way:-66
my_work:-25 myself:-22 nada:-63 nearly:41 need:-99 need__ride:-25 need_a:-32 need_to:-64 needing:26 needle:45
negro:47 new:-122 new_$:-64 new_battery:-50 next:-116 next_door:-29 next_week:-74 ni:-101 ni__ni:-34 ni_nada:-39
night:35 night_$:35 ningun:-124 ningun_ruido:-43 ninguna:-73 ninos:36 ninos_$:59 no:31 no_$:-200 no__all:-51
no__at:-67 no__bien:81 no__da:23 no__dar:47 no__en:38 no__gusto:-22 no__here:-26 no__it:33 no__la:45 no__lights:-103
no__los:69 no__nada:-55 no__ni:-63 no__ningun:-109 no__ninguna:-70 no__no:-129 no__nomas:24 no__on:-27 no__prender:25
no__si:22 no__y:34 no_agarra:68 no_and:-25 no_arranca:54 no_frena:97 no_hace:-38 no_hay:-45 no_it:31 no_le:-24
no_leaks:-65 no_lights:-35 no_me:37 no_noise:-114 no_noises:-27 no_para:74 no_prende:86 no_puedo:30 no_quede:-27
no_quiere:105 no_quiso:70 no_rechina:-39 no_se:-32 no_sigue:38 no_sirve:24 no_smoke:-51 no_thanks:48 no_tiene:-81
no_trae:-89 no_you:-49 nobody:-34 noise:-42 noise_$:62 noise__all:-74 noise__fixed:-25 noise_at:-70 noise_that:29
noises:-40 noisy:-40 nomas_el:-45 nombre:-25 normal:59 not:-73 not__week:46 not_a:-22 not_going:-34
not_interested:-25 not_right:-36 not_this:44 nothing:38 now_$:-97 now_it:65 now_no:39 nuevas:-60 nuevas_$:-26
number:-45 number_$:-29 nut:83 o:-90 o__de:-26 of:76 of_$:-22 of__all:55 of_a:45 of_my:43 of_the:25 off:-29 off__i:23
oil:-55 oil__came:24 oil_cap:-25 oil_change:-22 oil_light:24 oil_pressure:47 oily:32 ok__the:26 ok_friday:37 old:-58
on:175 on_$:25 on__back:25 on__dash:-22 on__freeway:53 on__friday:-32 on__highway:23 on__hill:56 on__i:42 on__is:30
on__th:-51 on__way:-52 on_a:25 on_after:43 on_hills:78 on_it:-23 on_me:96 on_my:-94 on_your:-39 once:-54 one:49
one_$:-65 one__my:38 one_is:-34 one_of:36 one_side:27 one_that:31 open:66 or:-141 or_anything:-43 otra:25 otra_vez:53
otro:-47 out:60 out_$:36 out__door:-36 out__me:57 out_front:-26 out_last:25 out_no:-43 out_on:56 over:135 over_$:26
over__the:41 over_bumps:42 over_the:29 overheating:25 overnight:30 overnight_$:29 own_$:29 oye:119 oye_que:46
oye_un:35 pads:-28 pads_are:-25 paid:-23 palanca:30 para__en:29 para__lado:65 para_el:-25 para_la:28 para_un:56
parado:-27 park:158 park_$:114 paro:31 pasa:-28 pasar:85 paso:42 pass:-40 pass_$:-28 past:89 past_$:48 patina:22
pedal:146 pega:40 pegado:38 perfect:-36 perfect_$:-32 perfecto:-26 pero:120 pero__es:-23 pero__un:27 pero_le:61
phone:-61 phone_$:-33 pick:-23 pierde:115 pila:60 ping:39 pink:34 plan:-80 plan_$:-68 plastic:40 please_$:-32
point:35 pole:39 ponchada:26 poncho:23 poncho__llanta:22 popped:51 por:39 porq:30 porque:72 pothole:38 power:117
precio:-38 prende:148 prende_$:50 prender:50 prendida:-64 prendida_$:-67 prendido:-47 prendido_$:-34 prendio:57
presion:46 press:42 pressure:52 pretty:29 price:-58 price_$:-24 puddle:47 puede_$:-26 puede_ser:25 puedo:81
puerta:-34 puerta_$:-30 pull:-77 pull_my:-26 pulled:-66 pulled_a:-40 pulls:52 pump:68 purrs:-30 puse:-23 put:-38
que:121 que__agua:26 que__estan:-34 que__la:23 que__para:23 que__van:-22 que_baje:44 que_calle:-26 que_es:-41
que_la:26 que_le:-51 que_tanto:-25 que_ya:38 queda_pegado:40 quede_muy:-73 quede_sin:27 quedo:-161 quedo_$:-43
quedo__en:29 quemado:38 quemado_$:22 quien:-23 quiere:115 quiero:-29 quiet:-25 quiso:70 quit:-111 quit_$:-47
quit_on:63 quit_smoking:-72 quita:47 quita_$:47 radiador:39 radiador_$:25 raining:32 ramp:33 raro:55 rato:-36
reads:34 real:25 really:35 rear:67 rechina:-22 rechinando:34 red:-77 red_light:-112 reminders:-36 reminders_$:-27
replaced:-61 replaced_the:-43 report:-37 reversa:83 reversa_$:76 reverse:68 ride:-37 ride_$:-24 right:-116
right_$:-55 right_now:-88 rip:27 roars:22 rock:23 roja:26 rojo:52 rotors:-23 rough:73 rueda:43 ruido:86 ruido_$:42
ruido_como:22 ruidos:-113 ruidos_ni:-51 run:-23 running:29 running_late:-34 sabado:-27 said:-58 saldria:24
saldria_$:22 sale:113 sale_$:-53 sale__blanco:30 sale__velocidad:36 sale_humo:46 sale_un:36 say:-33 says:79
says_the:61 se:272 se__como:22 se__con:-54 se__en:46 se__hasta:22 se__la:-70 se__llevo:-50 se__pegado:40
se__poncho:26 se__que:40 se__sale:39 se__sin:24 se__sola:30 se__un:47 se__va:62 se__y:46 se_agradece:-52 se_apaga:50
se_apago:27 se_calento:22 se_calienta:47 se_equivocado:-32 se_esta:26 se_fue:-45 se_hace:-22 se_jalonea:28 se_la:-24
se_las:-28 se_le:55 se_lo:-127 se_me:141 se_oye:116 se_prendio:22 se_puede:-53 se_puso:22 se_queda:29 se_quedo:23
se_quita:47 se_va:38 sea:-23 seat:66 seat_belt:33 second:83 second_$:-26 second_gear:95 see:92 segunda:32
segunda_$:33 semana_$:-25 sending:-30 sera:23 set:-40 shake:-104 shake__it:-57 shake_on:-57 shakes:65 she:50 shes:27
shifts:88 shimmies:89 shop:-59 shoulder:125 shoulder_$:62 showed:46 shredded:23 shudders:35 shut:98 shut_$:52
shuts:28 shuts_off:30 si:47 si_$:-23 si__martes:42 si_el:42 si_pero:36 side:36 sidewall:34 sign:-41 sign_me:-26
sigue:99 sin:76 sin_aire:27 sin_luces:24 since_i:49 since_the:-54 skip:-34 skip_the:-25 sky:33 slow:24 smell:46
smells_like:44 smoke:-64 smoke_break:-49 smoke_from:-25 smoking:-125 smoking_deal:-25 smooth__butter:-22
smooth_as:-22 so:-56 so__cant:25 so_im:59 so_no:-26 soft:23 sola:30 solo:39 solo_$:23 some:-34 somebody__me:25
something:30 something__up:-55 something_came:-56 sooner:28 sorry:-55 sound:51 sounds:-91 sounds__a:-91
sounds_good:-34 sounds_like:-39 soy:-28 sparks:59 speak_to:-22 speed:70 speed_$:40 squeaking:-59 squeaks:-71
squealing:36 stalled:49 start:-54 start_$:-70 started:49 starts:-79 station:-23 stay:57 steam:40 steering:112
steering_got:23 step:58 stick:39 still:45 still_on:-72 stop:94 stop__time:34 stop_in:28 stopped:28 straight_$:28
street:40 street_$:37 stuck__traffic:-43 stuck_on:55 stuff:44 stuff_$:37 su:-99 sube:30 suena:-43 suena_bien:-76
suena_como:22 sure:-33 suspension:24 symbol:41 tail:56 tailpipe:44 take:-24 takes:86 takes__to:85 takes_forever:54
talk:-33 taller:-47 taller_$:-26 tambien:64 tan:-22 tarde_$:-25 temp:65 tengo:63 tengo_que:27 termometro:36
texting:-24 texts:-34 th:-72 th_$:-40 than:-30 thanks_$:-40 thanks_it:39 that_$:-39 that__a:-27 that_gets:24
that_is:-25 that_it:25 that_the:-27 the__and:-56 the__at:-27 the__be:-46 the__bill:-35 the__box:36 the__brake:31
the__by:-26 the__came:38 the__desk:-26 the__doesnt:73 the__down:53 the__end:53 the__from:-33 the__front:55
the__has:-28 the__if:40 the__is:33 the__it:35 the__job:-43 the__light:32 the__line:48 the__need:-36 the__next:-29
the__now:-27 the__off:-24 the__on:-34 the__ramp:23 the__since:44 the__station:-23 the__that:43 the__through:22
the__to:41 the__was:-57 the__went:110 the__were:-38 the__with:-26 the_back:109 the_battery:-26 the_belt:-50
the_better:-22 the_brakes:-42 the_car:-45 the_door:-110 the_drive:28 the_e:23 the_freeway:55 the_garage:35
the_hill:37 the_intersection:46 the_leak:-24 the_light:-24 the_mechanic:-30 the_middle:25 the_morning:-46 the_new:28
the_noise:47 the_oil:-30 the_old:-29 the_one:32 the_pedal:42 the_phone:-34 the_right:40 the_seat:52 the_second:-41
the_shop:-39 the_shoulder:121 the_sidewall:34 the_sky:33 the_smoke:-30 the_steering:44 the_stop:41 the_storm:22
the_temp:39 the_texts:-22 the_th:-71 the_time:24 the_tires:-109 the_truck:88 the_visit:-50 the_way:76 the_wheel:59
the_wiper:-30 them:-30 then_$:-49 then_it:37 there:78 there_$:-68 there__a:157 there__an:24 there__no:-26
there_are:25 there_is:189 there_was:46 these:-25 they:-70 they__the:-49 they_replaced:-40 thing_$:-22 things:-49
think:97 think_$:123 think__it:-35 this_$:-46 this__is:-38 this__it:43 this_is:-22 this_morning:99 this_one:-44
this_week:98 those:-83 though:55 though_$:49 thought:-22 three:68 through:54 through_$:27 thursday:-24 thursday_$:-69
thursday__it:29 tiembla:67 tiene_una:54 tienen:-57 tight:26 time_$:-22 time__hit:33 time_i:22 tira:47 tirada:83
tirado:27 tire:135 tire_$:39 tire__out:33 tire_is:48 tire_on:-41 tired:-22 tires:-86 tires_$:-50 tires_be:-39
tires_look:29 to_$:-23 to__a:51 to__in:-23 to__it:46 to__my:-43 to__off:24 to__oil:-32 to__to:-43 to_be:-26
to_bring:-23 to_call:-37 to_cancel:-31 to_drive:-41 to_fix:36 to_get:118 to_have:-23 to_hold:25 to_let:66 to_make:-25
to_me:-27 to_speak:-22 to_start:68 to_stop:52 toda:30 todavia:-25 today:86 today_$:59 todo:-58 todo__con:-49
todo_bien:-90 todo_el:67 tomorrow:65 tomorrow_$:30 tomorrow_is:-22 tomorrow_it:29 too:-23 too_$:22 too_much:-25
took__to:53 topes:42 tosiendo:42 totaled:-33 toward:58 toward_the:58 trabajo:-75 trabajo_$:-31 trabajo_no:-36
trae:142 trae__la:64 trae__luz:-61 trae__ruido:23 trae_la:29 trae_un:81 trae_una:44 traffic_$:27 traffic_is:-32
traigo:22 trail:59 trail_of:59 truck:56 truena:47 tues:40 tuesday:-29 tuesday_$:-27 turn:77 turn_over:23 turns:160
tuvieron:52 twice:107 twice_today:39 two:75 two_$:24 two_days:50 ultima:-27 ultima_vez:-23 un:143 un__al:26
un__como:23 un__de:27 un_golpeteo:29 un_lado:73 un_ruido:87 un_zumbido:24 una:137 una_llanta:63 una_luz:33 under:134
under__dash:29 under__hood:-33 under_me:62 under_the:67 unstop:-32 up:45 up__the:-26 up_at:-28 uphill:74 us:-30
usadas:-25 va:142 va_para:41 vacation:-27 vacation_$:-22 vacia:38 van__hacer:-25 vapor:40 veces:52 velocidad:66
velocidad_$:66 venden:-59 vendimos:-36 ver:33 verdad:-22 verde:48 vez:25 vi:48 vibra:65 vibrates:55 viene:33
viernes:-34 visit:-53 visit_$:-52 volante:79 voy:-41 voy_a:-28 vuelta:26 vuelta_$:47 warning:-105 was:-101
was__again:38 was__on:-25 was_a:48 was_fixed:-35 was_in:-23 water:27 way:29 way_$:-30 way_down:57 way_now:-23 we:-102
we__it:-28 we_move:-27 week_$:-40 week_it:42 went:156 went__on:68 went_away:96 went_black:26 went_off:-27 went_out:72
were:-83 were__on:-39 wet:25 what:-86 what__a:-33 what__if:-24 what__that:27 what__the:-33 what__you:26 what_do:38
what_does:-44 what_happens:-27 what_is:-46 wheel:101 wheel_bearing:-27 wheel_looks:26 wheels:-41 when:70
when__get:-22 when__i:-38 when__stop:47 when__turn:26 when_i:165 when_the:-37 whenever:-30 where:48 where__i:-27
where_do:-27 where_i:63 which:-92 whine:41 whining:26 who:-49 whoever:-35 whole:97 whole_car:71 why_does:-22 will:-88
will_the:-50 window:-35 windshield:22 wiper:-58 wipers:-111 wipers_squeak:-78 wires:73 with:-93 with_speed:36
with_the:-67 wobbles:75 won:-22 wont:65 wont__able:-26 wont__in:40 wont__it:-97 wont__there:-47 wont_be:-144
wont_go:38 wont_make:-65 wont_start:78 work:-105 works:86 works_but:65 worse:59 worse_than:34 worth:-22 would:-46
would_i:-28 wrong:-24 y:141 y_$:-34 y__bien:-41 y__lo:-22 y__no:41 y__se:27 y_casi:34 y_el:-28 y_las:78 y_me:-25
y_nada:32 y_no:42 y_ya:60 ya__cambiaron:-33 ya__en:31 ya__frena:60 ya__las:-25 ya__rechina:-36 ya_casi:53 ya_le:-61
ya_lo:-24 ya_ni:39 ya_no:25 ya_quedo:-45 yeah:-31 year:-44 year_$:-54 yes_$:-55 yes__works:67 yes_it:39 yes_monday:36
yes_thurs:22 you:-157 you_$:-27 you__a:-93 you__my:-31 you__the:-53 you_can:28 you_check:-36 you_left:-116
you_said:-37 your:-132 zumbido:32
"""
