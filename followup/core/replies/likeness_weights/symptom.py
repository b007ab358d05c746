"""What speaks for and against `symptom`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "symptom"
BIAS = -142
WEIGHTS = """\
#abad:-32 #abaj:73 #abel:54 #abla:-25 #able:-25 #abri:-44 #abro:114 #acce:28 #aced:-71 #acei:36 #acel:95 #acen:-65
#acer:-36 #ache:36 #acho:52 #acie:42 #acin:31 #acio:39 #acki:24 #adas:-38 #adea:34 #adec:-69 #adel:-94 #aden:45
#adia:53 #adli:103 #afor:24 #afte:29 #agai:24 #agar:91 #agen:-25 #agra:-97 #agua:246 #ahea:-45 #ailp:44 #aini:30
#airb:77 #aire:50 #akes:240 #akin:95 #alan:42 #alar:-51 #aled:-26 #alen:88 #ales:74 #algo:81 #algu:23 #alie:46
#alla:22 #alli:54 #allo:57 #almo:30 #alon:83 #alre:-51 #also:96 #alte:30 #alto:68 #alum:66 #aman:49 #amar:27 #amat:60
#ambe:35 #amin:44 #amos:-73 #ampo:27 #anan:30 #anca:97 #ance:-66 #anco:80 #anda:149 #andb:80 #ande:-91 #ando:186
#anec:49 #ange:-64 #angi:54 #anic:59 #anks:74 #anoc:36 #ansm:-34 #anta:34 #ante:22 #anti:50 #anto:-36 #anym:40
#anyt:-42 #apag:136 #apar:-68 #apen:36 #apor:47 #aqui:-64 #arab:-47 #arag:47 #arca:-29 #arch:96 #arco:35 #arel:49
#arga:44 #argo:41 #arks:55 #arle:23 #arlo:26 #arly:44 #arni:-112 #aron:-143 #aros:43 #arpa:34 #arra:198 #arte:36
#arts:-86 #asad:-34 #asar:96 #asca:54 #ashb:45 #ashi:41 #asti:33 #astr:40 #atal:28 #atbe:57 #atch:70 #atel:105
#ater:-25 #ates:96 #atin:68 #ator:25 #atro:-43 #atte:36 #atul:-25 #auge:26 #aunq:40 #aust:47 #avad:-39 #aven:-30
#avia:-30 #away:86 #awfu:24 #ayed:22 #ayer:66 #bach:36 #bado:-48 #baja:-117 #baje:33 #bajo:178 #ball:76 #bare:49
#bata:24 #batt:-22 #bble:86 #beat:-22 #been:43 #befo:23 #belt:56 #bett:-33 #biar:-61 #bica:-36 #bida:64 #bido:38
#biem:-64 #bike:-60 #bill:-47 #bing:37 #bios:130 #blac:54 #blan:48 #blar:24 #bles:69 #blew:40 #blin:127 #blow:51
#boar:43 #bomb:35 #book:-54 #boom:43 #borr:63 #bota:35 #both:48 #brak:95 #bran:37 #brat:93 #brea:-64 #brin:27
#bris:-48 #brok:103 #buen:-35 #bump:67 #burn:64 #butt:-25 #buzz:36 #cabe:44 #cada:76 #cado:-33 #cale:89 #cali:50
#call:-44 #camb:-66 #came:45 #cami:26 #canc:-46 #cape:22 #carg:59 #carr:84 #casa:-68 #casc:54 #casi:86 #catc:66
#cati:-39 #ccel:29 #ccid:-33 #ceit:36 #cele:134 #cesi:-23 #chad:24 #chan:-32 #char:52 #chec:25 #ched:-30 #chem:-27
#cher:33 #ches:47 #chis:93 #chor:26 #chun:25 #cias:-33 #cida:82 #cide:-29 #cien:39 #ciga:-26 #cing:36 #cion:32
#cita:-40 #ckin:56 #clam:66 #clic:32 #clun:75 #clut:23 #coas:46 #coch:34 #coff:53 #cofr:28 #cold:59 #colo:30
#come:-73 #como:134 #comp:-106 #cond:69 #conf:-44 #cong:28 #cont:-76 #cool:62 #cosa:24 #coul:-29 #cove:-61 #cran:108
#crat:-53 #craz:44 #croo:43 #ctio:27 #ctri:32 #cuad:35 #cual:-61 #cuat:-23 #cuch:24 #cues:61 #curv:30 #dame:-23
#dash:62 #davi:-23 #dawn:-27 #dded:22 #ddle:66 #deal:-48 #deba:72 #dece:-71 #dela:-96 #deme:-42 #ders:36 #desd:56
#desk:-32 #dewa:33 #diad:32 #diat:31 #dice:50 #dida:-62 #dido:-49 #died:85 #dier:-62 #digo:-25 #dimo:-41 #ding:59
#dirt:-30 #disa:25 #dlig:110 #does:82 #doin:-34 #done:-47 #dont:42 #door:-190 #dora:-26 #dore:-39 #down:130 #drea:-47
#driv:82 #drop:57 #duri:29 #duro:-26 #eadl:120 #eads:34 #eady:-60 #eaks:-87 #eali:26 #eall:32 #eams:44 #eand:90
#eard:47 #earl:54 #ease:-39 #eati:40 #eave:-34 #ebaj:72 #ecal:47 #echa:61 #econ:69 #ecti:24 #ecto:-24 #ectr:32
#edal:161 #edes:-29 #edin:25 #edle:52 #eedi:25 #eedl:52 #eels:89 #eeps:101 #eeri:112 #eewa:24 #efor:23 #egad:97
#egla:-31 #egro:50 #eite:36 #eith:-23 #ejar:27 #ejor:-95 #elan:-44 #elea:53 #elec:29 #eler:118 #ells:28 #eloc:85
#else:-28 #elta:35 #emad:42 #emaf:24 #embl:101 #emin:-42 #emos:-70 #empe:44 #empt:59 #enar:113 #enas:39 #ence:53
#enci:23 #enda:-31 #ende:128 #endi:-187 #endo:55 #enen:-50 #enev:-26 #enfr:54 #engi:102 #engo:41 #enos:-106 #ensa:-23
#ense:22 #ensi:25 #enso:23 #enta:110 #ente:80 #entr:127 #epla:-62 #epor:-34 #equi:-37 #erad:26 #eran:-23 #erar:23
#erat:35 #erce:23 #erda:-22 #erde:159 #erdi:-41 #ered:-59 #eres:-36 #erfe:-55 #erhe:61 #erin:124 #erks:35 #ermo:35
#erna:29 #erne:-25 #erro:28 #ersa:87 #erse:101 #ervi:72 #ervo:25 #erza:71 #esca:34 #esco:-23 #escu:72 #esde:56
#eset:-24 #esio:47 #esnt:75 #espe:-55 #espo:35 #essa:-26 #essu:47 #esta:72 #este:-23 #esto:-80 #etal:150 #eteo:40
#eter:43 #ethi:33 #etim:26 #etra:51 #etro:33 #ette:-43 #eutr:25 #evas:-62 #even:23 #ever:153 #ewal:32 #eway:120
#excl:76 #exha:47 #exit:22 #exti:-28 #exts:-45 #falt:-27 #faro:32 #fast:29 #fect:-57 #feel:124 #fell:-33 #ffee:53
#ffic:-26 #fier:40 #fill:56 #fine:-34 #fing:27 #fire:-27 #firs:-62 #fixe:-122 #flas:34 #flat:23 #flic:25 #flui:-69
#flus:-62 #foco:-62 #foll:23 #fona:-22 #foqu:46 #fore:51 #forg:-23 #form:-24 #foro:24 #forw:54 #foun:54 #fren:341
#frid:-29 #frie:59 #frio:42 #from:80 #fron:-23 #fter:66 #fuer:68 #fuga:49 #fuse:53 #gado:108 #gain:24 #game:-28
#gana:-44 #gara:42 #garo:81 #garr:65 #gate:46 #gaug:26 #gear:142 #gela:53 #ghwa:48 #gine:101 #ging:65 #gnal:35
#goes:60 #goin:79 #golp:88 #goma:44 #gone:-61 #good:-51 #gote:54 #grad:-108 #grat:-28 #grav:22 #grea:-132 #gree:67
#grin:154 #groa:31 #guan:57 #guna:-64 #gund:26 #gust:-31 #habl:-33 #hace:37 #haci:40 #hada:25 #haha:-45 #haki:25
#hand:53 #hani:47 #hank:-27 #harc:35 #hard:42 #hast:22 #haus:47 #hboa:45 #head:63 #hear:104 #heat:68 #heck:24
#heel:58 #help:24 #heme:-23 #hene:-26 #hera:33 #hese:-25 #hich:-99 #hift:164 #high:63 #hill:274 #himm:84 #hine:47
#hing:50 #hink:95 #hisp:67 #hizo:-23 #hock:-26 #hoev:-36 #hold:122 #hole:142 #home:29 #hone:-56 #hops:33 #hora:-24
#hors:24 #hose:-66 #houg:52 #houl:93 #hour:-30 #hous:-22 #howe:42 #hoyo:23 #hree:74 #hrou:58 #huel:95 #huev:33
#humb:-31 #humo:103 #hump:32 #hunk:77 #huts:35 #hway:48 #iapa:-70 #iaro:-47 #ibra:146 #ican:-24 #icke:29 #icks:49
#icon:70 #idad:67 #iday:-31 #idea:28 #iden:-34 #ides:38 #idew:33 #idge:-32 #idle:123 #idos:-102 #iemb:81 #iend:144
#iene:36 #ient:136 #ierd:116 #iere:102 #iern:-39 #iero:-35 #ierr:36 #iert:-22 #ifte:32 #ifts:96 #igar:-26 #ight:-39
#ighw:48 #igna:35 #igua:24 #igue:89 #ilen:40 #iles:-33 #illo:27 #ills:118 #ilpi:44 #imes:39 #immi:79 #imos:-46
#impi:-102 #inca:51 #ince:-27 #indi:80 #indo:-44 #inds:61 #info:-28 #inge:23 #ingu:-182 #inin:43 #inke:95 #inks:26
#inos:43 #ints:58 #intu:113 #iona:92 #ione:-30 #iono:61 #ions:-34 #iper:-170 #ippi:48 #iqui:-31 #irad:98 #iran:25
#irba:77 #ires:-80 #irri:27 #irst:-62 #isan:-26 #isap:26 #isas:-37 #ises:-22 #isio:-29 #isit:-61 #ismo:43 #isnt:-27
#ispa:64 #isse:23 #issu:-25 #ista:32 #isto:-23 #ithe:-23 #itse:56 #ittl:41 #iver:-51 #ives:-99 #ivew:91 #ivin:39
#ivoc:-29 #ixed:-122 #jaja:-64 #jalo:53 #jaro:44 #jerk:38 #join:69 #jueg:51 #jump:72 #junt:-34 #keep:94 #kers:23
#king:73 #knee:-65 #know:-26 #lace:-89 #lack:54 #lado:65 #lama:46 #lamo:-22 #lamp:31 #lanc:90 #lank:26 #lant:110
#larg:24 #larm:-45 #lash:30 #latc:56 #lati:-28 #lava:-43 #lave:30 #lder:127 #leak:-25 #lean:61 #leav:-32 #lect:29
#left:-110 #lego:-69 #lenc:43 #lend:-27 #lent:99 #lera:101 #lero:43 #less:-23 #lgui:26 #lick:150 #lide:46 #lido:30
#lien:25 #lies:29 #life:-22 #ligh:58 #like:133 #limp:-34 #lind:51 #ling:48 #link:110 #liqu:-33 #litt:41 #llas:-48
#lleg:-91 #ller:-42 #llow:90 #lmos:31 #loci:85 #lone:53 #long:25 #look:66 #lora:25 #lose:28 #lost:77 #lowi:31
#lows:93 #lpet:49 #lpip:44 #lrea:-51 #lter:25 #ltim:-27 #ltos:47 #luce:62 #lueg:-24 #luid:-69 #lumb:64 #lunk:75
#lush:-62 #lutc:23 #lyin:48 #mach:-29 #mafo:24 #maki:62 #mand:-98 #mane:41 #marc:69 #mark:64 #mati:55 #mber:-33
#mbia:-70 #mbid:39 #mbio:87 #mbla:79 #mbol:39 #mbra:66 #mech:47 #medi:-22 #mejo:-100 #mell:65 #meno:-26 #ment:-42
#mero:-29 #meta:149 #mete:100 #meth:33 #meti:27 #metr:25 #mies:76 #mile:-32 #mill:-29 #mind:-49 #misi:-28 #mism:50
#miss:-59 #mmie:76 #mofl:37 #moke:-29 #moki:-106 #mome:27 #mone:-48 #mont:-23 #morn:114 #morr:57 #most:42 #mped:26
#mpez:35 #mpia:-108 #mpre:-34 #much:-71 #myse:-29 #nada:-53 #nale:100 #nana:30 #nand:53 #naro:-22 #nato:30 #nazo:-22
#ncar:27 #ncel:-43 #ncha:29 #ncho:24 #ncie:35 #ncon:-25 #ndan:31 #ndar:-29 #nded:-25 #ndem:-35 #nden:-45 #nder:179
#ndid:-110 #ndim:-33 #ndin:48 #ndio:41 #ndow:-36 #near:25 #nece:-45 #neci:57 #need:-49 #negr:59 #neut:25 #next:-106
#nfor:-32 #nfre:45 #ngan:-23 #ngel:53 #nger:29 #nges:94 #ngin:164 #ngra:-25 #ngun:-187 #nigh:37 #ning:-81 #nino:32
#nker:93 #nkin:31 #nner:-28 #nobo:-28 #nois:-89 #nomb:-22 #norm:59 #noth:23 #nque:56 #nsio:27 #nsmi:-34 #nsor:24
#nsto:-33 #ntan:52 #ntas:-168 #nten:-63 #ntes:-34 #ntic:53 #ntra:131 #ntre:-32 #ntro:25 #ntur:113 #nuev:-110
#numb:-40 #nymo:40 #nyth:-35 #oard:43 #oast:55 #obbl:96 #obod:-28 #obre:41 #ocad:-29 #oche:53 #ocid:84 #ocks:48
#ocup:-31 #odav:-23 #oday:93 #odri:34 #oesn:75 #oeve:-36 #offe:53 #ofle:37 #ofre:28 #oing:45 #oint:101 #oise:-49
#oisy:-40 #oked:49 #oken:62 #okin:-94 #olan:131 #ollo:23 #olor:39 #olpe:88 #ombr:-22 #omes:-23 #omet:92 #omor:57
#ompr:-34 #onal:96 #onan:30 #onaz:-22 #once:-50 #onch:43 #onea:45 #oney:-45 #onge:50 #ongr:-25 #onid:22 #onte:-65
#ooke:42 #ooks:70 #oola:59 #oost:29 #open:67 #oppe:102 #oqui:54 #orad:-26 #ores:-48 #orev:28 #orgo:-24 #orks:88
#orma:60 #orme:-27 #orni:116 #orqu:48 #orra:61 #orre:-24 #orri:47 #orro:72 #orry:-54 #orse:63 #orth:-29 #orwa:54
#osas:23 #oses:47 #osie:34 #oste:28 #osti:45 #otal:-43 #otan:29 #otea:46 #othi:41 #otho:35 #otra:22 #otro:-43
#oude:-52 #ough:162 #ould:38 #oved:22 #over:128 #owar:55 #owed:33 #ower:92 #owin:41 #pade:34 #pads:-59 #paga:87
#pago:27 #paid:-24 #pala:40 #para:-72 #park:202 #paro:32 #parp:34 #part:-28 #pasa:35 #paso:40 #past:58 #peda:160
#peed:86 #pega:74 #pena:31 #pera:-23 #perd:-57 #perf:-55 #pero:131 #pers:-136 #pete:45 #pezo:37 #phil:70 #phon:-64
#piap:-70 #pick:-31 #pier:107 #pila:54 #ping:128 #pink:35 #pipe:43 #plac:-92 #plan:-116 #plas:39 #podr:29 #poin:32
#pole:40 #ponc:47 #pone:-25 #popp:55 #porq:83 #port:-43 #poth:35 #pour:26 #powe:116 #pped:96 #ppin:69 #prec:-48
#pren:144 #pres:114 #pric:-73 #pudd:50 #pued:35 #puer:-26 #pull:-65 #puls:26 #pump:74 #purr:-22 #quea:-77 #qued:-142
#quem:30 #quid:-32 #quie:25 #quis:101 #quit:-39 #quiv:-31 #raba:-59 #rabr:-47 #ract:42 #rada:63 #rade:-105 #radi:36
#rage:46 #rail:57 #rain:82 #rake:84 #ramp:37 #ranc:74 #rank:103 #raro:58 #rast:37 #ratc:-53 #rate:68 #rati:44
#rato:-40 #raye:33 #razy:44 #rbag:74 #rcha:115 #reak:-66 #real:62 #ream:-41 #rear:57 #reas:-50 #reat:-82 #reca:84
#rech:22 #reci:-57 #reco:-22 #reen:68 #reet:37 #reew:24 #rega:46 #regl:-41 #rell:22 #rely:49 #remi:-88 #rena:210
#rend:142 #reno:77 #rent:28 #repl:-63 #repo:-46 #rese:-29 #resi:47 #ress:79 #rest:-31 #rete:29 #retr:53 #reve:199
#rfec:-55 #rgot:-24 #rhea:61 #rice:-75 #rida:-30 #ride:-43 #ridg:-32 #rido:32 #rien:124 #righ:-143 #rill:39 #rinc:62
#rind:154 #ring:88 #risa:-47 #risi:28 #rite:-24 #rive:29 #rivi:47 #rmal:54 #rmom:41 #rnes:-38 #rnin:76 #road:-32
#roan:31 #roba:-29 #roca:-38 #rock:78 #roja:32 #rojo:37 #roke:103 #rong:-22 #roni:22 #rook:43 #ropp:26 #rops:62
#roug:125 #rpad:34 #rque:36 #rran:75 #rras:37 #rreg:-41 #rret:32 #rrie:50 #rsda:-23 #rsec:40 #rted:38 #rter:24
#rtes:-37 #rtie:-22 #ruck:62 #rued:33 #ruen:58 #runn:28 #rush:23 #rust:22 #rwar:53 #saba:-34 #saca:30 #sada:-38
#said:-56 #sale:139 #sali:23 #sand:-32 #sapp:26 #says:60 #scab:53 #scap:22 #scra:-55 #scre:33 #scuc:24 #sday:-33
#seas:-27 #seat:104 #seco:79 #sect:40 #self:24 #send:-47 #seno:28 #sens:24 #sera:32 #seri:22 #serv:92 #shbo:45
#shie:26 #shif:164 #shim:84 #shin:62 #shoc:-26 #shop:-58 #shou:92 #show:34 #shut:121 #side:63 #sien:77 #sign:57
#sigu:87 #sile:40 #sing:49 #sion:37 #skip:-31 #slam:27 #slic:91 #slid:76 #slip:49 #slow:44 #smel:65 #smis:-34
#smok:-136 #sobr:53 #soft:22 #sola:32 #sold:-27 #soli:22 #solo:46 #some:41 #sorr:-62 #soun:-53 #spar:70 #spas:63
#spec:-23 #spee:86 #sper:-41 #spon:24 #sque:-93 #squi:37 #sses:-22 #ssue:-25 #ssur:47 #stac:57 #stal:67 #stan:-76
#star:-68 #stas:26 #stat:-22 #stay:53 #stea:40 #stee:110 #step:66 #ster:34 #stic:79 #stil:27 #stim:-23 #stom:-31
#stop:75 #stoy:-53 #stre:48 #stuf:43 #sube:43 #subi:62 #susp:26 #symb:37 #taci:57 #tail:138 #take:44 #tale:-36
#talk:-44 #tall:97 #tamb:60 #tand:69 #taro:-28 #tart:-48 #team:28 #tede:-29 #teer:112 #tele:-26 #tely:109 #temp:114
#tent:-52 #tera:29 #tere:-23 #tern:24 #ters:58 #tery:-22 #test:35 #text:-115 #than:-68 #them:-34 #thes:-25 #they:-78
#thin:45 #thol:35 #thos:-78 #thou:34 #thre:64 #thro:60 #tick:38 #tico:41 #tiem:73 #tien:-22 #tier:-23 #tigh:29
#tima:-45 #ting:80 #tion:27 #tira:176 #tire:-36 #toda:104 #todo:-60 #toma:-38 #tomo:56 #tope:61 #tops:35 #tora:-30
#tosi:34 #tota:-43 #towa:55 #trab:-54 #trac:95 #trad:-25 #trae:141 #trai:47 #tral:25 #tran:118 #trar:72 #trat:-27
#tree:45 #tric:32 #trip:-29 #troc:-38 #trol:22 #tron:24 #truc:59 #true:57 #tsel:56 #tter:-67 #ttin:33 #ttle:50
#tues:24 #tuff:43 #tula:-28 #turn:214 #tuvi:58 #twic:94 #uand:40 #uatr:-23 #ubic:-37 #ubid:64 #uces:33 #ucho:48
#udde:36 #uddl:50 #uder:-52 #ueak:-140 #ueal:48 #ueda:27 #uedo:-83 #uego:32 #uele:86 #uelt:34 #uema:51 #uena:49
#ueno:-25 #uerz:70 #uest:40 #uete:31 #ueva:-88 #uido:-48 #uier:70 #uish:41 #uiso:68 #uita:45 #uito:54 #uivo:-31
#ulde:114 #ulle:-69 #ulls:59 #ulti:-27 #umbe:-58 #umbi:39 #umbl:22 #umbr:79 #umbs:-31 #umpe:29 #umps:68 #unda:33
#unde:133 #unds:-102 #unge:109 #unki:34 #unni:28 #unqu:41 #unst:-33 #unta:-29 #uphi:70 #urin:23 #urni:74 #urns:154
#ursd:-23 #urva:29 #usad:-29 #usan:-37 #ushi:27 #uspe:26 #uste:-45 #usto:-45 #utra:25 #utte:-27 #uvie:58 #vaca:-34
#vaci:32 #vado:-38 #vapo:47 #vece:44 #velo:85 #vend:-134 #vent:24 #verd:28 #vere:-64 #verh:61 #vers:100 #very:28
#vewa:91 #vibr:149 #vien:41 #visi:-62 #voca:-29 #vola:73 #wall:103 #ward:108 #warn:-112 #wate:35 #went:157 #were:-76
#wful:24 #what:-120 #whee:58 #when:98 #wher:29 #whic:-106 #whin:60 #whoe:-36 #whol:102 #wice:94 #wild:-27 #will:-99
#wing:39 #wipe:-181 #wire:73 #with:-111 #wobb:96 #wont:61 #wors:52 #wort:-22 #woul:-26 #writ:-23 #wron:-25 #xcla:76
#xhau:47 #xtin:-27 #yeah:-61 #year:-37 #ying:46 #ymbo:37 #ymor:40 #your:-147 #ysel:-29 #ythi:-47 #zero:25 #zumb:49
%again_later:-32 %again_later%away:-31 %again_later%busy:-39 %again_later%car_part:127 %again_later%elsewhere:-39
%again_later%fails:97 %again_later%family:-37 %again_later%gone_car:56 %again_later%leak:32 %again_later%leave_me:63
%again_later%lift:-32 %again_later%message:-59 %again_later%noise:170 %again_later%pay_day:-44 %again_later%phone:33
%again_later%question:-37 %again_later%refuse:45 %again_later%season:-70 %again_later%shake:67
%again_later%shift_it:-59 %again_later%smoke_smell:69 %again_later%start_again:63 %agree:-129 %agree%away:57
%agree%bad:67 %agree%bring:-35 %agree%car:-29 %agree%do_it:-27 %agree%doubt:-58 %agree%elsewhere:50 %agree%family:-28
%agree%leak:34 %agree%message:-22 %agree%money:72 %agree%noise:42 %agree%on_way:56 %agree%place:60
%agree%question:138 %agree%shake:161 %agree%shift_it:-36 %agree%smoke_smell:137 %agree%thanks:-31 %away:-95
%away%bad:37 %away%busy:-50 %away%call_off:-44 %away%car_part:97 %away%money:29 %away%noise:71 %away%on_way:-23
%away%place:-37 %away%question:-61 %away%refuse:-62 %away%smoke_smell:42 %bad:-66 %bad%call_off:-41 %bad%car:-42
%bad%car_part:-60 %bad%leak:45 %bad%machine:40 %bad%meaning:52 %bad%money:36 %bad%noise:36 %bad%shake:61
%bad%staff:-37 %bring:-99 %bring%busy:-25 %bring%call_off:70 %bring%car:42 %bring%car_part:163 %bring%elsewhere:-26
%bring%fails:41 %bring%leave_me:121 %bring%message:-32 %bring%money:-34 %bring%noise:29 %bring%on_way:29
%bring%place:94 %bring%question:157 %bring%refuse:39 %bring%shake:27 %bring%smoke_smell:44 %bring%start_again:43
%busy:-65 %busy%call_off:-64 %busy%car_part:-23 %busy%fails:-36 %busy%noise:31 %busy%question:30 %busy%refuse:-61
%busy%shake:36 %busy%shift_it:35 %call_off%car:57 %call_off%do_it:68 %call_off%elsewhere:-26 %call_off%fails:-118
%call_off%how_long:77 %call_off%leave_me:103 %call_off%meaning:27 %call_off%message:-48 %call_off%money:55
%call_off%odometer:-115 %call_off%on_way:33 %call_off%phone:78 %call_off%place:61 %call_off%refuse:61
%call_off%shake:29 %call_off%shift_it:42 %call_off%staff:-30 %call_off%start_again:36 %call_off%thanks:25
%call_off%who:-31 %car:90 %car%car_part:68 %car%elsewhere:-42 %car%fails:245 %car%family:-22 %car%gone_car:-113
%car%leave_me:68 %car%lift:-76 %car%noise:134 %car%pay_day:49 %car%place:28 %car%question:24 %car%shake:97
%car%shift_it:50 %car%smoke_smell:59 %car%start_again:46 %car%thanks:-24 %car%wrong_one:-95 %car_part:409
%car_part%do_it:-220 %car_part%doubt:87 %car_part%elsewhere:-30 %car_part%fails:63 %car_part%family:-80
%car_part%how_long:96 %car_part%leak:103 %car_part%leave_me:210 %car_part%machine:48 %car_part%message:-26
%car_part%money:-76 %car_part%noise:-158 %car_part%odometer:69 %car_part%on_way:144 %car_part%opening:96
%car_part%phone:64 %car_part%place:115 %car_part%question:-68 %car_part%shake:190 %car_part%shift_it:-26
%car_part%smoke_smell:190 %car_part%staff:-84 %car_part%start_again:85 %car_part%thanks:-25 %do_it:-208
%do_it%doubt:31 %do_it%family:-22 %do_it%gone_car:-60 %do_it%leak:93 %do_it%leave_me:28 %do_it%on_way:46
%do_it%question:25 %do_it%refuse:77 %do_it%season:-29 %do_it%shift_it:25 %do_it%smoke_smell:30 %do_it%start_again:36
%do_it%wrong_one:-64 %doubt:61 %doubt%elsewhere:50 %doubt%noise:47 %doubt%on_way:68 %doubt%shift_it:23
%doubt%wrong_one:31 %elsewhere:-77 %elsewhere%fails:78 %elsewhere%lift:-28 %elsewhere%phone:40 %elsewhere%place:52
%elsewhere%refuse:-50 %elsewhere%season:-24 %elsewhere%shift_it:-37 %elsewhere%smoke_smell:-25 %elsewhere%staff:25
%fails:521 %fails%family:-27 %fails%gone_car:101 %fails%how_long:49 %fails%leak:49 %fails%leave_me:-184
%fails%meaning:27 %fails%money:-34 %fails%on_way:35 %fails%pay_day:22 %fails%phone:38 %fails%place:104
%fails%question:40 %fails%refuse:94 %fails%shake:-31 %fails%smoke_smell:-65 %fails%staff:40 %fails%who:-57
%fails%wrong_one:191 %family:-136 %family%gone_car:-35 %family%odometer:-99 %family%staff:72 %gone_car:-235
%gone_car%leave_me:37 %gone_car%shift_it:-37 %gone_car%start_again:53 %gone_car%wrong_one:-35 %how_long:-58
%how_long%noise:63 %how_long%on_way:-29 %how_long%question:-45 %how_long%shake:24 %how_long%start_again:33
%how_long%who:-24 %leak:368 %leak%meaning:29 %leak%money:32 %leak%odometer:-22 %leak%on_way:69 %leak%question:109
%leak%refuse:-106 %leak%smoke_smell:-25 %leak%start_again:25 %leak%thanks:-22 %leak%wrong_one:-42 %leave_me:-87
%leave_me%message:-78 %leave_me%noise:52 %leave_me%phone:50 %leave_me%place:47 %leave_me%question:68
%leave_me%refuse:29 %leave_me%season:-50 %leave_me%smoke_smell:-58 %leave_me%start_again:51 %leave_me%wrong_one:45
%lift:-79 %lift%on_way:28 %lift%place:52 %lift%refuse:-46 %machine:38 %machine%meaning:44 %machine%shake:47
%machine%wrong_one:40 %meaning%odometer:-29 %meaning%phone:42 %meaning%question:-50 %meaning%refuse:46
%meaning%shake:54 %meaning%staff:32 %message:-184 %message%place:-25 %message%question:-22 %message%start_again:-54
%money:-131 %money%noise:103 %money%place:-23 %money%question:-42 %money%refuse:31 %money%smoke_smell:65 %noise:609
%noise%odometer:82 %noise%on_way:91 %noise%pay_day:25 %noise%phone:54 %noise%place:63 %noise%question:306
%noise%refuse:124 %noise%shift_it:104 %noise%smoke_smell:-43 %noise%staff:38 %noise%start_again:118
%noise%wrong_one:129 %odometer:-77 %odometer%on_way:22 %odometer%place:64 %odometer%question:-64 %odometer%refuse:-46
%odometer%shift_it:-23 %on_way:-51 %on_way%phone:22 %on_way%question:63 %on_way%refuse:-59 %on_way%shake:45
%on_way%shift_it:22 %on_way%smoke_smell:33 %on_way%staff:31 %on_way%start_again:44 %on_way%wrong_one:22 %pay_day:-85
%pay_day%question:-35 %pay_day%season:-23 %phone:-48 %phone%place:31 %phone%question:-42 %phone%refuse:26
%phone%smoke_smell:39 %phone%staff:24 %phone%start_again:48 %phone%who:-30 %phone%wrong_one:27 %place:39
%place%question:39 %place%refuse:40 %place%who:-36 %place%wrong_one:27 %question:-122 %question%refuse:50
%question%shake:180 %question%shift_it:86 %question%smoke_smell:89 %question%start_again:-62 %question%who:-75
%refuse:-101 %refuse%shift_it:58 %refuse%start_again:76 %refuse%wrong_one:81 %season:-150 %season%shift_it:-28
%season%smoke_smell:-44 %shake:557 %shift_it:43 %shift_it%smoke_smell:22 %shift_it%wrong_one:28 %smoke_smell:596
%smoke_smell%who:-27 %smoke_smell%wrong_one:23 %staff:-50 %start_again:-40 %thanks:-114 %who:-158 %wrong_one:-156
@?:-196 @after_visit:48 @car:-125 @confirm_stop:-128 @day:28 @later:-158 @odometer:-31 @offers:-95 @reading:-159
@time:-55 @times:-110 @walk_in:-72 ^_a:-85 ^_airbag:61 ^_al:23 ^_all:-35 ^_anda:88 ^_ando:-67 ^_ay:22 ^_baja:-114
^_battery:43 ^_both:40 ^_brakes:33 ^_cada:33 ^_can:-144 ^_cant:38 ^_car:208 ^_como:-42 ^_congratulations:-25
^_coolant:56 ^_could:-30 ^_cranks:55 ^_cual:-27 ^_cuando:-111 ^_cuanto:-47 ^_de:-59 ^_dead:-23 ^_dice:40 ^_do:-52
^_donde:-61 ^_el:165 ^_en:-50 ^_estan:-25 ^_estoy:-52 ^_feels:37 ^_fire:-39 ^_flat:-39 ^_found:74 ^_go:-26
^_going:-53 ^_hace:53 ^_hay:55 ^_headlights:33 ^_heard:44 ^_hit:-118 ^_how:-172 ^_hoy:55 ^_huele:50 ^_i:-143 ^_id:-53
^_if:-56 ^_ill:-60 ^_im:-99 ^_is:-257 ^_it:148 ^_just:-77 ^_key:51 ^_la:143 ^_las:117 ^_le:174 ^_left:-22 ^_let:-27
^_lo:-28 ^_lost:98 ^_mande:-30 ^_mas:-88 ^_meh:-42 ^_my:89 ^_never:-28 ^_new:-32 ^_no:-61 ^_not:-69 ^_on:-92 ^_one:54
^_para:-31 ^_pedal:24 ^_pink:35 ^_por:-42 ^_power:22 ^_puede:24 ^_que:-164 ^_quede:-81 ^_quedo:-45 ^_quit:-105
^_rear:60 ^_running:48 ^_se:-30 ^_second:27 ^_shake:-51 ^_she:33 ^_si:50 ^_smells:24 ^_smoke:-45 ^_sounds:-100
^_start:-189 ^_steering:45 ^_still:-56 ^_stop:-122 ^_stuck:-66 ^_su:-30 ^_suena:-42 ^_sure:-24 ^_takes:30 ^_temp:27
^_tengo:36 ^_that:-35 ^_the:97 ^_there:140 ^_they:-48 ^_this:-32 ^_thursday:32 ^_tiembla:67 ^_tiene:107 ^_tienen:-25
^_tire:88 ^_todo:-80 ^_too:-28 ^_took:26 ^_trae:168 ^_traffic:-30 ^_traigo:25 ^_va:-28 ^_vibra:32 ^_we:-42 ^_were:-28
^_what:-154 ^_wheel:24 ^_when:-125 ^_whenever:-25 ^_where:-24 ^_which:-90 ^_white:23 ^_whole:77 ^_why:-28 ^_will:-60
^_wipers:-48 ^_wont:-30 ^_would:-23 ^_y:-73 ^_ya:-101 ^_yeah:-45 ^_yes:80 ^_you:-138 ^_your:-40 a:118 a__and:109
a__at:23 a__book:-34 a__can:31 a__de:-37 a__fluid:-32 a__for:-25 a__in:113 a__is:25 a__noise:22 a__now:-51 a__on:52
a__out:-29 a__since:-22 a__sound:33 a__tire:-47 a__under:-42 a__with:31 a_bit:37 a_como:-79 a_flat:24 a_hacer:-31
a_huevo:26 a_la:25 a_las:-89 a_little:24 a_mi:-63 a_plan:-80 a_pothole:35 a_quemado:23 a_ride:-27 a_rip:24 abajo:142
abajo_$:107 able:-34 able_to:-34 about_to:78 accident:-22 aceite:25 acelerador:42 adelante:-104 adelante_$:-119
adentro:27 after:34 after_a:34 after_i:55 again:24 again_$:-64 again__i:26 agarra:67 agradece:-68 agradece_$:-43
agua:190 agua_$:115 agua__el:-22 agua_por:42 aguanta:52 aguanta_$:48 ahead:-45 ahead_and:-22 ahora:33 air:77
airbag:77 airbag_light:28 aire:50 al:98 al_cien:-36 al_frenar:53 al_rato:-27 alarm:-24 algo:95 alguien:26 all:38
all_$:-46 all__on:36 all__the:44 all__way:63 all_good:-59 all_of:25 all_over:49 all_the:71 alla:-23 almost:31
along:44 already:-51 already_$:-22 also:96 alto:29 alto_$:26 altos:39 altos_$:39 alumbran:66 amanecio:57 amber:35
an:-59 and:255 and__back:37 and__doesnt:-31 and__dont:44 and__is:38 and__it:34 and__no:51 and_i:43 and_it:74
and_now:95 and_the:113 and_then:27 anda:154 andan:29 ando:-115 ando_en:-24 anoche:36 anticongelante:53
anticongelante_$:52 anymore:40 anything:-35 apaga:46 apago:33 apenas:36 aqui:-63 aqui_$:-47 are:-75 are__again:-48
are__the:-32 are__to:72 are_about:73 are_in:-49 are_you:-27 arrancar:39 arrancar_$:29 arrastrando:30 arrastrando_$:29
as:-57 as_butter:-22 asi:-33 ask:-54 ask_me:-25 at__speed:30 at__the:-22 at_all:-38 at_idle:39 at_my:-30 at_stop:43
at_work:-48 aunque:41 away:86 awful:24 ay:22 ayer:62 azul_$:-33 back_$:-53 back_end:55 backing:24 bad:52 baja:-140
baja_$:-57 baje:33 baje_la:35 ball:72 barely:49 bateria_no:68 battery_was:34 be:-237 be__to:-34 be_able:-33
be_there:-60 bearing:-28 been:43 been_on:25 before:23 better:-33 better_$:-38 bien:-54 bien_$:-145 bien__que:27
bike:-58 bill:-47 bit:34 black:54 blanco:59 blew:40 blinker:93 book:-48 book_it:-28 both:55 box:32 box_$:38 brake:25
brake_$:47 brake__flush:-47 brake_fluid:-56 brake_job:-50 brakes_$:-106 brakes__a:24 brakes__like:36 brakes__stop:53
brakes_are:48 break:-68 bridge:-22 brinca:44 bring:-42 broke:40 broken:63 btw:22 bumper_$:32 bumps:60 bumps_$:50
burning:70 but:253 but__is:101 but_it:125 but_my:45 but_the:59 but_there:51 butter:-27 butter_$:-26 by_itself:40
by_the:50 cada:76 cada_dia:23 calento:30 calienta:51 call_me:41 calle:-30 cambiaron:-47 cambiaron_la:-32 cambie:-25
cambio:-42 cambio__aceite:-23 cambio_de:-31 cambios:130 came:63 came_on:118 came_up:-45 can:40 can__a:23
can__check:-38 can__drive:-34 can__me:60 can__move:-26 can__the:26 can_i:-99 can_we:-36 can_you:-23 cancel:-41
cancel_$:-26 cant__in:28 cant_get:55 cant_stop:31 car:56 car__i:-23 car__the:-25 car_is:-26 car_wont:26 carga:50
carretera:31 carretera_$:25 carro:71 carro__como:78 carro_no:27 carro_se:24 casa:-68 casi:86 casi_no:76 caso_$:-24
catches:60 catches_$:60 change:-34 charco:35 check_engine:46 check_the:-32 chispas:64 chunk:25 cien:-39 cien_$:-28
cita:-54 cita_$:-41 clunk:27 clunking:35 clutch:23 cochera:34 coffee:53 cofre:28 cold:59 cold_$:27 come:-36
come_$:-23 come_in:-40 comes:-23 coming_$:-37 como:136 como_de:33 compre:-29 con__frenos:-53 con_las:-26 con_un:-28
congratulations:-25 contento:-45 coolant:59 cosas:23 cosas_$:25 could:-23 covered:-51 covered_$:-40 crack_of:-29
crank:36 cranks:64 crazy:44 crooked:43 cual:-33 cuando:41 cuando__vuelta:38 cuando_doy:38 cuando_me:-32 cuanto:-39
cuatro:-23 cuesta:55 da:94 da__el:22 dar:59 dash:42 dash_$:22 dawn:-27 day:-62 day_$:-24 days:35 days_$:41 de:-69
de_$:22 de__bateria:36 de__llanta:-56 de__llantas:-26 de__por:23 de__que:-29 de_abajo:66 de_aceite:-28 de_agua:71
de_baja:-28 de_la:-49 de_las:-40 de_llantas:-25 de_los:-44 de_que:-24 debajo:72 debajo_del:51 dejaron:26
dejaron_el:-23 del:87 del__esta:38 del_aceite:41 del_carro:25 del_cofre:23 desde:56 desde_que:27 desk:-32 di:-22
dia:-27 dice:54 dice_que:52 did:-87 did_it:-26 did_my:-23 died:85 died__the:41 died_on:26 digo:-24 dim:24
direccion:-112 direccion_$:-99 direccionales:100 do:-130 do_i:-62 do_it:-28 does__a:62 does_a:-37 doesnt:75
doesnt__anymore:32 dog:-26 doing:-34 done:-47 dont:42 dont_see:30 door:-185 door_$:-112 dos:34 dos_veces:28 down:137
down_$:-31 down__street:45 down__the:63 down_on:73 doy:31 doy_vuelta:38 dream:-50 drive:103 drive_$:156 drive_it:-41
drive_through:23 drives:-126 drives__as:-57 drives_like:-78 driveway:91 driveway_$:85 driving:47 driving_$:34
drop:-31 dropped:34 drops:62 dry:-36 duro:-33 e:25 e_brake:25 echa:33 echa_humo:25 echeme:-23 el:126 el__a:-92
el__de:-38 el__del:23 el__no:109 el__pero:68 el__se:130 el__va:72 el__vibra:22 el__y:58 el_aceite:-58
el_acelerador:42 el_anticongelante:54 el_cambio:-27 el_carro:47 el_de:-57 el_freeway:-22 el_freno:96 el_jueves:-30
el_martes:-28 el_mismo:24 el_mofle:37 el_motor:35 el_pedal:49 el_radiador:22 el_ruido:-39 el_sabado:-26
el_trabajo:-64 el_viernes:-29 el_volante:85 empezo:37 empezo_a:37 en:68 en_$:-27 en__altos:39 en__carretera:31
en__casa:-50 en__cochera:27 en__mananas:37 en_frio:28 en_las:119 en_los:61 en_que:-31 en_un:-23 end:78 enfrente:45
enfrente_$:31 engine:96 entran:113 entrar:69 entrar_a:28 entro:-23 equivocado:-28 equivocado_$:-24 era:-30 es:-80
es_$:-54 es_la:-27 es_que:72 escape:22 eso:-80 esta:63 esta__la:-37 esta_baja:-29 esta_bien:26 estaciono:61 estan:-69
estan_$:-55 estoy:-52 every:43 every__light:-115 every_morning:62 every_red:-116 every_time:25 ex:-34 exclamation:66
exclamation_mark:60 exhaust:47 exit:22 fan:28 favor_$:-52 feel_like:-23 feels:132 feels_like:63 fell:-29 feo:27
fierro:37 fill:43 fine:-34 fine_$:-65 fine_but:30 finger:29 fire:-31 first:-62 first_$:-79 fix:37 fixed:-122
fixed_$:-36 flashing:35 flashing_$:23 flat:24 flat__the:56 flat_on:43 flat_out:-45 fluid:-68 fluid_$:-37
fluid_flush:-47 flush:-62 flush_$:-51 foco:-66 foquito:46 for:-141 for__appointment:23 for__brakes:-33 for__first:25
for_the:-48 forever:28 forever_to:61 forgot:-24 forward:54 found:54 found_a:65 free:-33 freeway:24 freeway_$:33
frena:102 frenar:109 frenar_$:83 freno:148 freno_$:35 frenos:-66 frenos_$:-98 friday_$:-25 friday__it:26
friday_also:40 friday_at:-29 friend:67 frio:42 frio_$:42 from:80 from__back:29 from__the:61 from_the:46 from_under:58
front:-23 front_desk:-28 front_tire:27 fue:-70 fue_la:-46 fuerza:71 fuga:87 fyi:22 garage:47 garage_$:24 gauge:26
gear:110 gear_$:63 get:81 get__on:41 get_it:87 get_my:-29 go:109 go_$:55 go_ahead:-33 goes:60 going:79 going_on:-22
going_to:-132 going_up:55 going_uphill:69 golpeteo:40 goma:48 gone:-61 gone_$:-31 good:-61 good_$:-40 got_a:47
got_it:-28 got_to:24 goteando:23 gracias:-33 gracias_$:-73 grease:-38 great:-83 great__the:-55 green:70 grinding:86
grinds:44 gusto:-31 guy:-59 hace:139 hace_ningun:-29 hace_un:74 hacen:-65 hacer:-31 haciendo:42 had:43 had__get:54
had_a:-24 had_to:96 haha:-44 haha_$:-30 hanging:45 happens__i:-26 happens_if:-26 hard:38 hard_to:33 has:-51
has__on:30 has_a:-39 has_been:33 hasta:22 hasta_el:23 have_a:27 hay:35 hay_que:24 headlights:110 hear:58 heard:47
heard_a:44 help:24 help_$:-37 help__stuck:55 help_im:55 her:-22 here:-95 here_$:-65 hi:-33 highway:48 hill:77
hill_$:62 hills:116 hills_$:97 his:-64 his_bike:-55 hit:-59 hit__pothole:35 hit_a:37 hizo:-23 hold:108 hold_the:27
home:29 home_$:23 hood_$:-48 hora:-48 hora_$:-51 hot:44 how:-204 how__are:-25 how__for:-27 how__is:-48 how__it:-24
how__to:30 how_low:-48 how_much:-61 hoy:110 hoy__manana:-39 hoy_mismo:29 hoy_no:39 hoyo:23 huele:90 huele__huevo:26
huele_a:77 huevo:33 hum:26 humo:103 humo__al:32 humo_blanco:40 humo_negro:47 i:74 i__a:74 i__be:-71 i__down:26
i__it:-61 i__like:-35 i__my:24 i__on:42 i__see:79 i__smoking:-60 i__that:39 i__the:26 i__who:-33 i_brake:22
i_came:-28 i_can:83 i_dont:30 i_get:-80 i_have:59 i_hit:79 i_just:-24 i_know:-30 i_left:-40 i_moved:35 i_need:-73
i_park:77 i_pulled:-23 i_quit:-61 i_skip:-27 i_slow:29 i_stop:44 i_stopped:23 i_think:141 i_was:-26 i_wont:-102
id:-55 id__to:-46 id_like:-48 idea:28 idle:122 idle_$:36 if:-41 if__skip:-27 if_it:-46 igual:31 igual_$:24 ill:-115
ill__it:-40 ill__you:-30 ill_do:-25 ill_let:-31 im__my:-40 im__on:36 im__the:-25 im_down:-41 im_good:58 im_on:-41
im_stuck:53 in:36 in_$:-85 in__bit:-22 in__car:-38 in__garage:26 in__is:-30 in__middle:24 in__morning:-24 in__now:58
in__on:23 in__shop:-23 in__sidewall:31 in_a:62 in_it:-25 in_park:73 in_second:84 in_traffic:25 info:-22
interested:-25 interested_$:-24 intersection:40 into_the:-30 is:85 is__brake:-65 is__but:31 is__car:-29 is__going:-25
is__in:42 is__like:35 is__out:31 is__the:-81 is_at:-33 is_cold:26 is_fixed:-49 is_getting:27 is_going:40 is_gone:-62
is_in:-46 is_it:-190 is_leaking:36 is_making:46 is_no:-23 is_on:28 is_own:38 is_perfect:-31 is_shaking:52
is_something:-27 is_stuck:34 is_the:-91 is_there:-34 is_this:-38 isnt:-27 it:177 it_$:-232 it__a:-24 it__cold:26
it__down:51 it__i:-31 it__in:-37 it__into:25 it__like:-33 it__over:26 it__own:38 it__the:-101 it__then:53 it__to:-55
it__today:24 it__when:66 it_a:-31 it_back:-45 it_died:30 it_does:80 it_doesnt:-35 it_friday:-31 it_in:-46 it_just:34
it_like:-40 it_makes:51 it_off:-32 it_on:-49 it_over:-27 it_pulls:24 it_starts:-40 it_still:69 it_takes:26
it_turns:39 it_up:-26 it_when:-29 it_wont:84 itself:56 itself_$:25 jaja:-57 jaja_$:-41 jalonea:31 jerks:35 job:-72
juego:52 jueves_$:-36 jueves__las:-33 jueves_a:-33 jueves_pero:29 jump:35 just__in:23 just__on:54 just_died:46 k:-40
k_$:-32 keeps:94 key:55 kid:-55 kid__a:-43 kid_has:-54 knock:-38 know:-26 know_who:-33 la__de:42 la__del:38
la__hoy:-34 la__no:112 la__se:58 la__trae:27 la__y:-54 la_bateria:40 la_carretera:31 la_casa:-56 la_cita:-53
la_cochera:34 la_goma:48 la_hora:-50 la_lavadora:-22 la_llanta:91 la_palanca:41 la_pila:58 la_reversa:71 la_rueda:37
la_suspension:27 la_troca:-35 la_ultima:-22 la_velocidad:43 lado:72 lado_$:44 largo:30 largo_$:27 las:182 las_$:-54
las__ya:37 las_cosas:26 las_llantas:-43 las_luces:54 las_mananas:37 last:-62 last_night:49 last_year:-44 latch:56
late:-99 late_$:-98 lately:96 lately_$:88 lavadora:-40 le:146 le__a:-61 le__cuando:69 le__un:72 le_cambiaron:-25
le_sale:120 le_van:-26 leak:-65 leak_is:-35 leaking:55 leaks:-30 leaks_no:-56 left:-110 left_$:-34 left__the:-30
left_a:-100 left_blinker:93 left_on:-34 left_rear:28 let__know:-31 let_go:90 let_me:-37 let_you:-28 light:48
light__on:81 light_came:71 light_is:68 lights:-95 lights_$:-117 like:136 like__in:68 like__is:30 like__on:42
like__plan:-80 like_a:34 like_crazy:46 like_to:-48 limpiaparabrisas:-70 line:30 line_$:36 liquido:-32 lit:24
little:41 llanta:168 llanta_$:-36 llanta_trae:27 llantas:-156 llantas_$:-90 llego:-69 llego_$:-49 llego_en:-24
lo:-101 lo__a:-41 lo__mi:-28 lo_vendi:-23 lol:-216 lol_$:-167 look_like:30 looks:71 looks_like:22 loose:-40
loose_$:-41 los:143 los__estan:36 los__no:31 los__rechinan:-59 los__se:38 los_altos:39 los_cambios:126 los_ninos:43
lost:77 lot:-35 loud:33 louder:-52 low:-24 low_$:-38 luces:33 luego:-24 lug:69 luz:-50 luz__la:-41 make:-88
make_it:-91 makes:92 makes_a:26 makes_the:45 making:62 making_a:39 mal:-26 manana_$:-51 mananas:37 mananas_$:41
manda:-23 mande:-33 marcha:116 marcha_$:85 mark:60 martes:-29 martes__el:-45 martes__le:48 martes_pero:43 mas:-65
mas_adelante:-86 me:-35 me_$:82 me__el:-104 me__en:48 me__la:-59 me__los:27 me__para:38 me__que:60 me__tirado:31
me__una:-27 me_da:-37 me_dejaron:-52 me_dejo:24 me_manda:-22 me_poncho:22 me_quede:106 me_sale:25 me_tuvieron:56
me_up:-28 me_va:62 mean_on:-36 mechanic:48 media:-22 meh:-42 mejor:-96 mejor_el:-22 menos:-26 metal:111 metal_$:63
metal__metal:31 mi:-127 mi_carro:38 middle__the:31 mil:-56 miles:-32 millas:-24 min:-162 min_$:-114 min_late:-30
mis:-44 mismo:44 miss:-45 miss_it:-37 mofle:37 monday_$:-35 monday__it:29 monday_but:26 money:-44 more:-27 morning:69
morning_$:94 mornings:37 move:-26 moved:22 mph:30 much:-95 much__a:-33 much_for:-26 much_is:-36 mucho:37
mucho_para:36 muy:-104 my:-95 my__car:-30 my__going:-25 my__has:-70 my__in:-35 my__is:35 my__keeps:43 my__look:30
my__wont:46 my_brakes:96 my_car:-31 my_driveway:61 my_kid:-56 my_mechanic:75 my_number:-33 my_oil:43 my_old:-24
my_seat:-25 my_tire:45 my_tires:74 my_way:-71 my_work:-26 myself:-29 nada:-52 nearly:39 need:-111 need__ride:-27
need_a:-34 need_to:-62 needing:26 needle:52 negro:59 neutral:25 neutral_$:25 new:-114 new_$:-60 new_battery:-52
next:-106 next_door:-27 next_week:-64 ni:-49 ni__no:22 ni_nada:-27 night:38 night_$:34 ningun:-112 ningun_ruido:-36
ninguna:-70 ninos:43 ninos_$:66 no:60 no_$:-172 no__all:-43 no__at:-62 no__bien:44 no__como:26 no__da:26 no__dar:42
no__en:45 no__here:-23 no__it:32 no__la:42 no__los:61 no__nada:-60 no__ni:-45 no__ningun:-98 no__ninguna:-68
no__no:-115 no__on:-26 no__y:30 no_agarra:63 no_and:-23 no_arranca:44 no_frena:93 no_hace:-36 no_hay:-45 no_it:36
no_leaks:-60 no_me:51 no_noise:-105 no_para:38 no_prende:64 no_quede:-25 no_quiere:108 no_quiso:68 no_rechina:-35
no_smoke:-48 no_thanks:45 no_tiene:-90 no_trae:-88 no_veo:22 no_voy:24 no_you:-51 nobody:-26 noise_$:66
noise__all:-70 noise__fixed:-29 noise_at:-65 noise_that:29 noises:-33 noisy:-40 nomas_el:-43 normal:54 not:-112
not__now:-23 not__week:45 not_going:-37 not_interested:-24 not_right:-43 not_this:43 nothing:41 now:-26 now_$:-125
now_it:62 nuevas:-62 nuevas_$:-30 number:-52 number_$:-35 o:-81 of:70 of__all:54 of_a:47 of_my:42 of_the:31 oil:-49
oil_change:-27 oil_pressure:42 ok__the:28 ok_friday:40 old:-58 on:218 on_$:26 on__back:24 on__freeway:47
on__highway:30 on__hill:61 on__i:40 on__is:34 on__side:22 on__th:-50 on__way:-49 on_a:42 on_after:39 on_hills:70
on_me:87 on_my:-97 on_your:-34 once:-38 one:34 one_$:-68 one__my:36 one_is:-34 one_of:38 one_side:27 one_that:25
only_at:-22 open:64 or:-134 or_anything:-38 otra:24 otra_vez:45 otro:-43 out:58 out_$:39 out__door:-36 out__me:53
out_front:-27 out_last:24 out_no:-42 out_on:52 over:164 over_$:30 over__and:22 over__the:35 over_bumps:50 over_the:29
overheating:34 own_$:28 oye:126 oye_un:42 pads:-59 pads_are:-25 paid:-24 palanca:41 para:-27 para__en:39
para__lado:45 para_el:-32 para_la:28 para_un:46 park:152 park_$:112 paro:34 pasa:-27 pasar:89 paso:40 pass:-35
pass_$:-29 past:76 past_$:40 pedal:153 pegado:39 perfect:-36 perfect_$:-33 pero:135 pero__un:31 pero_le:51 phone:-59
phone_$:-31 pick:-27 pierde:110 pila:58 ping:32 pink:35 place:-24 plan:-93 plan_$:-81 plastic:42 please_$:-33
point:34 pole:38 por_que:-38 porq:35 porque:48 porque_se:27 pothole:35 power:118 power_steering:23 precio:-39
prende:130 prende_$:42 prender:57 prendida:-63 prendido:-46 prendido_$:-34 prendio:50 presion:42 pressure:48
price:-62 price_$:-25 puddle:50 puede_$:-26 puede_ser:28 puedo:67 pull:-63 pulled:-61 pulled_a:-37 pulls:59 pump:74
put:-29 que:140 que__al:22 que__estan:-24 que__la:27 que__le:-25 que_baje:40 que_es:-34 que_la:34 que_le:-49
que_se:35 que_tanto:-24 queda:22 queda_pegado:40 quede_muy:-70 quedo:-151 quedo_$:-32 quemado:35 quien:-27 quiere:113
quiero:-30 quiso:68 quit:-114 quit_$:-56 quit_on:58 quit_smoking:-67 quita:48 quita_$:48 radiador:32 radiador_$:24
raining:30 raro:65 rato:-35 reads:27 real:31 really:32 rear:66 rechinando:23 red:-88 red_light:-111 reminders:-34
reminders_$:-29 replaced:-71 replaced_the:-51 report:-34 reversa:88 reversa_$:80 reverse:71 ride:-35 ride_$:-25
right:-138 right_$:-70 right_now:-110 rip:24 road:-24 rock:25 roja:27 rojo:40 rough:71 rueda:31 ruido:84 ruido_$:54
ruidos:-104 ruidos_ni:-46 running:28 running_late:-29 sabado:-31 saca:23 said:-56 sale:136 sale_$:-58 sale__blanco:39
sale__velocidad:39 sale_humo:60 sale_un:42 sale_vapor:22 say:-29 says:60 says_the:60 se:340 se__con:-40 se__cuando:27
se__en:23 se__hizo:-23 se__la:-45 se__las:22 se__llevo:-34 se__pegado:40 se__poncho:22 se__que:57 se__sale:38
se__sin:23 se__solo:24 se__un:55 se__va:76 se__y:54 se_agradece:-49 se_apaga:36 se_calento:27 se_calienta:42
se_equivocado:-26 se_esta:24 se_fue:-39 se_jalonea:29 se_la:-23 se_le:54 se_lo:-140 se_me:154 se_oye:118
se_prendio:23 se_puede:-54 se_queda:31 se_quita:48 se_siente:32 se_va:39 seat:56 second:66 second_$:-32
second_gear:91 see:95 segunda:24 segunda_$:29 sending:-32 sending_me:-22 set:-35 shake:-95 shake__it:-51 shake_on:-51
shakes:80 shaking:25 she:55 shifts:92 shimmies:76 shop:-59 shoulder:114 shoulder_$:58 showed:42 shut:93 shut_$:47
shuts:35 shuts_off:35 si:44 si__martes:45 si_el:47 si_pero:49 side:32 sidewall:32 siente:32 siente_que:25 sign:-35
sign_me:-26 sigue:87 sin:66 sin_aire:30 since_i:43 since_the:-54 skip:-35 sky:34 slow:22 smell:46 smells:35
smells_like:54 smoke:-53 smoke_break:-43 smoke_from:-23 smoking:-106 smoking_deal:-24 smooth__butter:-22
smooth_as:-22 so:-60 so__is:-23 so_no:-23 sola:27 sold:-26 solo:46 solo_$:28 some:-32 somebody__me:27 something:33
something__up:-48 something_came:-48 sorry:-62 sorry_$:-22 sound:53 sounds:-106 sounds__a:-103 sounds_good:-39
sounds_like:-50 soy:-31 sparks:54 speak_to:-22 speed:76 speed_$:43 squeaking:-54 squeaks:-61 start:-70 start_$:-87
started:40 starts:-79 stay:49 steam:25 steering:112 steering_got:25 step:57 stick:38 still:36 still__the:24
still_on:-71 stop:98 stop_in:25 stop_with:-22 storm:23 street:37 street_$:33 stuck__traffic:-46 stuff:43 stuff_$:36
su:-99 sube:38 suena:-23 suena_bien:-67 suspension:27 symbol:37 tailpipe:44 take:-35 takes:88 takes__to:89
takes_forever:58 talk:-31 taller:-38 taller_$:-23 tambien:62 tanto_que:27 temp:63 temp__is:22 tengo:47 termometro:38
texting:-32 texts:-45 th:-79 th_$:-46 than:-42 thank_you:-24 thanks_$:-41 thanks_it:37 that_$:-33 that__a:-26
that_gets:23 that_it:27 that_the:-27 the:63 the__and:-49 the__at:-33 the__be:-46 the__box:34 the__brake:28
the__by:-23 the__doesnt:74 the__down:56 the__end:53 the__from:-32 the__front:59 the__has:-32 the__home:24 the__if:35
the__is:42 the__it:31 the__job:-42 the__light:39 the__line:47 the__need:-38 the__next:-28 the__now:-31 the__since:43
the__that:35 the__through:23 the__to:43 the__truck:-22 the__was:-56 the__went:119 the__were:-37 the__with:-22
the_back:115 the_battery:-30 the_belt:-47 the_brakes:-42 the_car:-50 the_dog:-24 the_door:-109 the_drive:30 the_e:25
the_first:24 the_freeway:49 the_garage:33 the_highway:26 the_hill:42 the_hood:-24 the_leak:-34 the_mechanic:-28
the_middle:22 the_morning:-31 the_new:22 the_noise:47 the_oil:-35 the_old:-30 the_pads:-23 the_pedal:50 the_phone:-28
the_right:43 the_seat:48 the_second:-47 the_shop:-40 the_shoulder:110 the_sidewall:32 the_sky:34 the_smoke:-27
the_steering:38 the_stop:39 the_storm:23 the_temp:34 the_texts:-32 the_th:-78 the_time:24 the_tires:-117 the_truck:87
the_visit:-50 the_way:90 the_wheel:57 the_wiper:-33 them:-34 then_$:-34 then_it:35 there:66 there_$:-72 there__a:159
there__an:23 there_a:-23 there_are:22 there_is:183 there_was:46 these:-25 they:-76 they__the:-52 they_replaced:-41
things:-50 think:99 think_$:116 think__it:-26 this_$:-47 this__is:-38 this__it:43 this_morning:98 this_one:-40
this_week:83 those:-78 though:59 though_$:56 three:75 through:58 through_$:28 thurs_works:22 thursday_$:-56
thursday_works:22 tiembla:77 tiene_una:48 tienen:-50 tight:26 till:-29 time__hit:31 time_i:26 tira:56 tirado:25
tirando:25 tire:123 tire_$:43 tire_is:43 tire_on:-43 tires:-141 tires_$:-73 tires_be:-39 tires_look:26 to:29 to__a:49
to__at:24 to__it:40 to__my:-43 to__off:26 to__the:39 to__to:-47 to_be:-30 to_bring:-25 to_call:-33 to_cancel:-27
to_drive:-44 to_fix:41 to_get:115 to_hold:23 to_let:65 to_make:-31 to_me:-26 to_speak:-22 to_start:72 to_stop:52
toda:34 toda_la:23 todavia:-23 today:93 today_$:75 todo:-53 todo__con:-50 todo_bien:-77 todo_el:64 tomorrow:59
tomorrow_$:37 too_much:-25 took__to:52 tosiendo:34 totaled:-35 toward:55 toward_the:56 trabajo:-67 trabajo_$:-29
trabajo_no:-37 trae:143 trae__la:64 trae__luz:-57 trae_la:31 trae_un:72 trae_una:53 traffic_$:31 traffic_is:-34
trail:58 trail_of:58 trip:-28 troca:-38 truck:55 truena:52 tues:42 turn:67 turns:154 tuvieron:56 twice:94
twice_today:46 two:48 ultima:-22 un:198 un__al:27 un__de:30 un__que:28 un_golpeteo:33 un_lado:61 un_ruido:73
un_zumbido:31 una:154 una__de:-29 una_llanta:64 una_luz:36 under:116 under__dash:27 under__hood:-37 under_me:66
under_the:66 up:62 up_$:31 up_at:-28 uphill:70 us:-33 ustedes:-29 va:156 va_para:43 vacation:-28 vacation_$:-22
van__hacer:-25 van_a:-27 vapor:47 veces:44 velocidad:81 velocidad_$:81 venden:-56 vendi:-34 vendimos:-33 verde:43
vez:32 vi:48 vibra:56 vibrates:66 viene:37 viernes:-38 viernes_$:-23 visit:-53 visit_$:-52 volante:85 volante_$:23
voy_a:-27 vuelta:34 vuelta_$:56 warning:-112 was:-91 was__again:38 was__on:-30 was_a:57 was_fixed:-38 was_in:-22
water:35 way:35 way_$:-24 way_down:56 way_home:27 we:-102 we__it:-25 we_move:-26 week_$:-47 went:161 went__in:23
went__on:63 went_away:102 went_off:-22 went_out:70 were:-76 were__on:-42 what:-116 what__a:-33 what__if:-26
what__that:24 what__the:-44 what__you:28 what_do:30 what_does:-41 what_happens:-29 what_is:-72 what_would:22
wheel:101 wheel_bearing:-28 wheel_is:22 wheels:-43 when:129 when__get:-23 when__i:-40 when__is:32 when__slow:-22
when__stop:54 when_i:182 when_it:43 when_the:-37 whenever:-26 where:49 where__i:-22 where_do:-22 where_i:63
which:-102 whine:39 who:-56 whoever:-35 whole:102 whole_car:68 why:-28 will:-97 will_the:-50 window:-32 wiper:-56
wipers:-114 wires:66 with:-99 with_$:-23 with_speed:37 with_the:-75 wobbles:77 won:-23 wont:61 wont__able:-32
wont__in:39 wont__it:-101 wont__over:25 wont__there:-44 wont_be:-136 wont_go:42 wont_make:-66 wont_start:76 work:-85
works:88 works_but:69 worse:44 worth:-22 would:-39 would_i:-29 wrong:-25 y:188 y_$:-39 y__bien:-34 y__no:28 y__se:26
y_casi:36 y_las:80 y_lo:25 y_me:-25 y_nada:32 y_no:41 y_se:29 y_ya:49 ya:-55 ya__cambiaron:-29 ya__en:26
ya__rechina:-32 ya_casi:29 ya_le:-57 ya_ni:42 ya_quedo:-40 ya_van:23 yeah:-61 year:-36 year_$:-48 yes_$:-47
yes__works:76 yes_i:-22 yes_it:27 yes_monday:40 yes_thurs:23 you:-259 you_$:-38 you__a:-101 you__my:-38 you__the:-62
you_can:27 you_check:-38 you_left:-111 you_said:-33 your:-136 zero:25 zumbido:39
"""
