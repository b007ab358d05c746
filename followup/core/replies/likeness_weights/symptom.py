"""What speaks for and against `symptom`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "symptom"
BIAS = -136
WEIGHTS = """\
#abad:-34 #abaj:82 #abel:61 #abla:-25 #abra:-25 #abri:-54 #abro:108 #acce:40 #acci:-28 #aced:-68 #acei:43 #acel:100
#acen:-63 #acer:-48 #ache:56 #acho:49 #acie:39 #acin:31 #acio:46 #adas:-34 #adea:36 #adec:-77 #adel:-101 #aden:64
#adia:48 #adli:103 #ados:-32 #afor:28 #afte:28 #agai:45 #agar:84 #agen:-28 #agra:-102 #agua:273 #ahea:-47 #ahor:45
#ailp:44 #aini:30 #airb:81 #aire:65 #akes:240 #akin:95 #alan:36 #alar:-57 #aled:-29 #alen:89 #ales:71 #algo:82
#alie:73 #alin:27 #alle:-47 #alli:56 #allo:61 #almo:38 #alon:85 #alre:-65 #also:99 #alte:36 #alto:65 #alum:69
#aman:57 #amar:35 #amat:70 #ambe:39 #ambr:25 #amin:70 #amos:-81 #ampo:31 #anan:41 #anas:-27 #anca:112 #ance:-78
#anco:78 #anda:154 #andb:79 #ande:-89 #ando:174 #anec:61 #ange:-68 #angi:48 #anic:76 #anks:88 #anoc:47 #ansm:-29
#anta:29 #anti:52 #anto:-37 #anym:41 #anyt:-56 #apag:145 #apar:-82 #apen:39 #apor:43 #aqui:-48 #arab:-55 #arag:50
#arca:-31 #arch:99 #arco:36 #arel:47 #arga:30 #argo:38 #arks:59 #arle:58 #arlo:32 #arly:45 #arni:-105 #aron:-163
#aros:46 #arpa:36 #arra:211 #arte:37 #arts:-90 #asad:-41 #asar:92 #asca:61 #ashb:47 #ashi:38 #asol:29 #asti:34
#astr:41 #atal:26 #atbe:59 #atch:70 #atel:109 #ates:90 #atin:64 #atro:-43 #atte:39 #atul:-27 #auge:25 #aunq:40
#aust:46 #avad:-43 #aven:-30 #avia:-32 #away:75 #awfu:30 #ayed:28 #ayer:72 #bach:47 #bado:-48 #baja:-113 #baje:35
#bajo:183 #bala:-25 #bald:40 #ball:76 #bare:47 #bble:88 #beat:-26 #been:57 #befo:28 #bele:61 #belt:46 #bett:-40
#biar:-68 #bica:-40 #bida:63 #bido:42 #biem:-65 #bike:-60 #bill:-33 #bing:46 #bios:139 #blac:62 #blam:-26 #blan:43
#blar:39 #bles:84 #blew:39 #blin:134 #blow:53 #boar:44 #bomb:44 #book:-48 #boom:45 #borr:55 #bota:65 #both:45
#brak:114 #bran:48 #brat:87 #brea:-65 #brec:79 #bris:-56 #brok:96 #buen:-36 #bump:67 #burn:63 #butt:-25 #buzz:32
#cabe:49 #cabl:30 #cada:94 #cade:32 #cado:-40 #cale:89 #cali:59 #call:-45 #camb:-67 #came:68 #cami:42 #canc:-54
#cant:26 #care:-27 #carg:42 #carr:77 #cart:29 #casa:-78 #casc:61 #casi:110 #catc:66 #cati:-37 #ccel:29 #ccid:-36
#ceit:43 #cele:132 #cesi:-29 #chan:-31 #char:75 #ched:-30 #chem:-28 #cher:36 #ches:62 #chis:98 #chun:26 #cias:-45
#cida:80 #cide:-33 #cien:31 #ciga:-25 #cing:39 #cion:25 #cita:-27 #ckin:62 #clam:68 #clim:27 #clun:96 #clut:28
#coas:45 #coch:36 #coff:48 #cofr:29 #cold:59 #colo:27 #come:-81 #como:114 #comp:-128 #cond:85 #conf:-41 #cong:29
#cont:-79 #cool:65 #coug:39 #coun:-25 #cove:-60 #cran:109 #crat:-55 #craz:42 #cree:25 #croo:43 #ctio:35 #ctri:33
#cuad:34 #cual:-70 #cuan:-26 #cuch:33 #cues:54 #curv:30 #dame:-26 #dash:62 #date:-29 #davi:-26 #dded:28 #dder:34
#ddle:70 #deal:-52 #deba:70 #dece:-79 #deje:-30 #dela:-103 #deme:-48 #dena:33 #ders:56 #desd:58 #desk:-36 #dewa:34
#diad:41 #dice:47 #dida:-62 #dido:-54 #died:89 #dier:-46 #dimo:-44 #ding:26 #dirt:-30 #disa:26 #dlig:110 #does:76
#doin:-41 #done:-36 #dont:54 #door:-174 #dora:-28 #dore:-39 #down:139 #drea:-52 #dria:29 #drip:28 #driv:81 #drop:71
#duri:26 #eadl:119 #eads:45 #eady:-75 #eaks:-108 #eali:36 #eall:31 #eams:47 #eand:86 #eard:48 #earl:64 #ease:-44
#eati:33 #eave:-47 #ebaj:70 #ecal:44 #echa:87 #ecio:25 #econ:84 #ecor:-30 #ecti:31 #ecto:-34 #ectr:33 #edal:172
#edin:25 #edle:56 #eedi:25 #eedl:56 #eels:100 #eeps:100 #eeri:123 #efor:28 #egad:95 #egla:-28 #egro:50 #eite:26
#ejar:34 #ejor:-116 #elan:-48 #elea:52 #elec:28 #eler:124 #ells:30 #eloc:83 #else:-35 #elta:29 #emad:51 #emaf:28
#embl:107 #emin:-46 #emos:-81 #empe:58 #empo:-26 #empt:55 #enar:113 #enas:40 #ence:57 #enda:-33 #ende:134 #endi:-172
#endo:77 #enen:-57 #enev:-29 #enfr:54 #engi:86 #engo:53 #enos:-111 #ensa:-26 #enta:104 #ente:63 #entr:132 #epla:-60
#epor:-37 #equi:-42 #erad:34 #eran:-25 #erar:29 #erat:32 #erda:-26 #erde:176 #erdi:-38 #erec:28 #ered:-52 #eres:-44
#erfe:-64 #erhe:60 #erin:135 #erks:39 #ermo:25 #erna:34 #erne:-26 #erni:29 #erro:44 #ersa:87 #erse:107 #erta:-31
#ervi:66 #erza:83 #esca:27 #esco:-29 #escu:77 #esde:58 #esio:48 #esnt:81 #espe:-44 #espo:38 #essa:-29 #essu:52
#esta:70 #esto:-98 #etal:153 #eteo:43 #eter:42 #ethi:42 #etra:61 #etro:30 #ette:-50 #etty:29 #evas:-64 #ever:151
#ewal:34 #eway:116 #excl:77 #exha:46 #expl:-29 #exti:-27 #exts:-40 #ezco:-25 #faro:37 #fast:28 #fect:-67 #feel:125
#fell:-43 #ffee:48 #fier:61 #fill:63 #filt:-25 #fing:29 #fire:-36 #firs:-60 #fixe:-107 #flas:32 #flui:-74 #flus:-65
#flyi:47 #foco:-59 #foqu:45 #fore:65 #form:-26 #foro:28 #forw:53 #foun:48 #fren:372 #frid:-29 #frie:60 #frio:41
#from:83 #fron:-26 #fter:67 #fuer:92 #fuga:63 #fume:38 #fuse:50 #gado:95 #gain:45 #game:-33 #gana:-46 #gara:44
#garo:80 #garr:62 #gaso:29 #gate:49 #gaug:25 #gear:145 #gela:56 #ghwa:40 #gine:85 #ging:65 #glan:-27 #gnal:32
#goes:75 #goin:88 #golp:95 #goma:41 #gone:-67 #good:-55 #gote:64 #grac:-33 #grad:-114 #grat:-31 #grav:32 #grea:-129
#gree:61 #grin:137 #groa:28 #grua:27 #guan:48 #guna:-67 #gund:32 #gust:-31 #haci:49 #hada:25 #hago:-36 #haha:-51
#hand:45 #hani:53 #harc:41 #hard:45 #hast:41 #haus:46 #hboa:46 #head:76 #hear:113 #heat:70 #heel:70 #help:25
#hene:-29 #hera:36 #hese:-27 #hich:-102 #hift:166 #high:58 #hill:282 #himm:92 #hind:-25 #hine:49 #hing:37 #hini:27
#hink:92 #hisp:74 #hizo:-28 #hock:-30 #hoev:-35 #hold:109 #hole:147 #hone:-62 #hops:32 #hose:-67 #houg:40 #houl:109
#hour:-34 #hous:-29 #howe:45 #hree:67 #hrou:54 #hudd:34 #huel:102 #huev:28 #humb:-29 #humo:82 #hump:28 #hunk:75
#huts:32 #hway:40 #iapa:-76 #iaro:-51 #ibra:173 #ican:-27 #icen:-26 #icks:51 #icon:73 #idad:65 #iday:-27 #iden:-38
#ides:40 #idew:34 #idge:-33 #idle:129 #idos:-107 #iedo:28 #iemb:87 #iemp:-26 #iend:159 #iene:34 #ient:131 #ierd:118
#iere:99 #iern:-39 #ierr:62 #ifte:35 #ifts:93 #igar:-25 #ighw:40 #igna:32 #igua:27 #igue:105 #ilen:42 #iles:-33
#illo:29 #ills:129 #ilpi:44 #imbi:27 #imes:40 #immi:91 #imos:-45 #impi:-104 #inbo:68 #inca:52 #indi:67 #indo:-44
#inds:60 #info:-27 #inge:25 #ings:-37 #ingu:-196 #inin:57 #inke:94 #inks:25 #inos:35 #ints:55 #intu:106 #iona:89
#ione:-32 #iono:60 #ions:-34 #iper:-176 #ippi:47 #iqui:-32 #irad:109 #iran:25 #irba:81 #ires:-64 #irri:30 #irst:-60
#isap:26 #isas:-46 #ises:-31 #isio:-29 #isit:-61 #ismo:31 #ispa:70 #issi:27 #ista:37 #isto:-26 #itse:57 #itte:-30
#ittl:44 #iver:-54 #ives:-110 #ivew:97 #ivin:48 #ivoc:-35 #ixed:-107 #jaja:-92 #jalo:55 #jaro:39 #jerk:41 #join:65
#jueg:52 #jump:86 #junt:-38 #keep:91 #king:78 #knee:-66 #know:-29 #lace:-82 #lack:62 #lado:80 #lama:38 #lamp:31
#lanc:81 #lank:28 #lant:101 #larm:-51 #lash:28 #last:-27 #latc:58 #lati:-31 #lava:-53 #lave:25 #lder:135 #leak:-28
#lean:62 #leav:-39 #lect:28 #left:-118 #lego:-66 #lenc:43 #lend:-28 #lent:97 #lera:103 #lero:45 #less:-28 #lets:-31
#lgui:27 #lick:143 #lide:48 #lien:43 #lies:28 #life:-26 #ligh:67 #like:113 #limb:27 #limp:-37 #lina:29 #lind:53
#ling:56 #link:114 #liqu:-33 #litt:44 #llam:-25 #llas:-44 #lleg:-69 #ller:-53 #llow:80 #lmos:40 #loci:83 #lone:51
#long:35 #look:43 #lose:34 #losi:28 #lost:81 #lowi:30 #lows:96 #lpet:51 #lpip:44 #lrea:-65 #lter:26 #ltim:-32
#ltos:47 #luce:63 #luid:-74 #lumb:65 #lunk:96 #lush:-65 #lutc:28 #lyin:46 #mach:-27 #mado:26 #mafo:28 #maki:66
#mand:-102 #mane:57 #marc:67 #mark:65 #mate:-25 #mati:63 #mber:-30 #mbia:-82 #mbid:40 #mbin:26 #mbio:96 #mbla:87
#mbol:41 #mbra:69 #mech:53 #mejo:-120 #mell:72 #meno:-28 #ment:-43 #mero:-35 #meta:152 #mete:96 #meth:42 #meti:26
#mied:28 #mies:88 #mile:-34 #mill:-25 #mina:31 #mind:-52 #mism:36 #miss:-37 #mmie:88 #mofl:32 #moke:-41 #moki:-123
#mone:-53 #mont:-28 #morn:117 #morr:62 #most:44 #mped:31 #mpez:52 #mpia:-112 #mpin:30 #mpre:-41 #much:-63 #mush:25
#myse:-29 #nada:-65 #nail:28 #nale:98 #nana:43 #nand:72 #naro:-26 #nato:36 #ncar:26 #ncel:-51 #ncho:28 #ncie:31
#ndan:35 #ndar:-27 #nded:-29 #ndem:-39 #nden:-47 #nder:196 #ndid:-110 #ndim:-37 #ndin:25 #ndio:58 #ndow:-40 #near:32
#nece:-49 #neci:68 #need:-39 #negr:57 #next:-117 #nfor:-34 #nfre:46 #ngan:-29 #ngel:56 #nger:31 #nges:94 #ngin:142
#ngra:-27 #ngun:-200 #nico:28 #nigh:59 #ning:-72 #nker:88 #nkin:42 #nner:-29 #nobo:-35 #noch:27 #nois:-123 #noon:-26
#norm:65 #nque:48 #nsmi:-29 #nsto:-34 #ntan:52 #ntas:-185 #nten:-71 #ntes:-26 #ntic:56 #ntra:142 #ntre:-27 #ntur:106
#nuev:-116 #numb:-36 #nymo:41 #nyth:-51 #oard:44 #oars:26 #oast:53 #obbl:100 #obod:-35 #obre:33 #ocad:-34 #oche:63
#ocid:82 #ocks:44 #ocup:-38 #odav:-26 #oday:94 #odri:30 #oesn:81 #oeve:-35 #offe:48 #ofle:32 #ofre:28 #oily:32
#oing:47 #oint:102 #oise:-82 #oisy:-42 #oked:49 #oken:60 #okin:-108 #olan:144 #oles:-26 #olin:29 #olor:36 #olpe:95
#ombe:32 #ombr:-25 #omet:94 #omor:65 #ompl:-26 #ompr:-40 #onal:90 #onan:28 #once:-67 #onch:46 #onea:51 #oney:-47
#onge:57 #ongr:-27 #onte:-68 #ooke:43 #ooks:59 #oola:71 #oone:26 #oost:27 #open:68 #opes:44 #oppe:109 #oqui:50
#orad:-27 #ores:-47 #orev:36 #orks:90 #orma:65 #orme:-31 #orni:116 #orqu:73 #orra:55 #orre:-29 #orri:66 #orro:74
#orry:-54 #orse:67 #orth:-29 #orwa:53 #oses:48 #osie:41 #osin:27 #oste:27 #osti:47 #otal:-44 #otan:32 #otea:58
#otho:42 #otra:25 #otro:-47 #oude:-52 #ough:171 #ould:42 #ound:-38 #ount:-30 #over:143 #owar:57 #owed:35 #ower:91
#owin:40 #pade:36 #pads:-32 #paga:95 #pago:28 #pala:31 #para:-44 #park:215 #paro:30 #parp:36 #part:-30 #pasa:43
#paso:44 #past:71 #peda:170 #peed:82 #pega:70 #pena:33 #pend:-30 #perd:-60 #perf:-64 #pero:136 #perr:-27 #pers:-141
#pete:45 #pezo:57 #phil:76 #phon:-68 #piap:-76 #pick:-25 #pier:108 #pila:56 #ping:172 #pink:36 #pipe:42 #plac:-84
#plan:-116 #plas:42 #poin:37 #pole:45 #ponc:50 #pone:-35 #popp:57 #porq:103 #port:-36 #poth:42 #pour:25 #powe:121
#pped:92 #ppin:86 #prec:-52 #pren:178 #pres:125 #pret:27 #pric:-71 #pudd:50 #pued:41 #puer:-45 #pull:-88 #puls:33
#pump:78 #purr:-31 #puse:-25 #quea:-91 #qued:-156 #quid:-32 #quis:103 #quit:-69 #quiv:-36 #raba:-74 #rabr:-55
#ract:46 #rada:79 #rade:-111 #radi:46 #rage:49 #rail:55 #rain:94 #rake:96 #ramp:43 #ranc:91 #rank:106 #rapi:32
#raro:62 #rast:39 #ratc:-55 #rate:71 #rati:41 #rato:-45 #rave:30 #raya:-25 #raye:38 #razy:42 #rbag:79 #rcha:105
#rdie:-32 #reak:-71 #real:58 #ream:-39 #rear:60 #reas:-49 #reat:-84 #reca:70 #rech:30 #reci:-64 #reco:-36 #redd:28
#reen:65 #reet:39 #rega:50 #regl:-38 #rely:47 #remi:-97 #rena:218 #rend:175 #reno:82 #repl:-62 #repo:-51 #resi:49
#ress:90 #rest:-35 #rete:32 #retr:56 #reve:213 #rfec:-64 #rhea:60 #rice:-72 #rida:-30 #ride:-47 #ridg:-33 #rido:30
#rien:124 #righ:-158 #rill:31 #rinc:63 #rind:137 #ring:101 #risa:-56 #rivi:57 #rmal:60 #rmom:37 #rnat:36 #rnes:-38
#rnig:30 #rnin:86 #roan:28 #roar:26 #roba:-26 #rock:75 #roja:31 #rojo:46 #roke:93 #rong:-27 #rook:43 #ropp:25
#rops:77 #roug:123 #rpad:36 #rque:56 #rran:79 #rras:39 #rreg:-38 #rret:34 #rrie:62 #rros:-34 #rsec:46 #rted:48
#rtes:-42 #ruck:63 #rued:44 #ruen:58 #runn:29 #rvir:79 #rwar:53 #saba:-36 #saca:25 #sada:-34 #sado:-28 #said:-60
#sale:137 #sali:46 #sand:-33 #sapp:26 #says:79 #scab:61 #scom:-25 #scra:-53 #scre:45 #scuc:33 #sday:-39 #seat:107
#seco:103 #sect:46 #seda:-34 #send:-47 #sera:45 #serv:85 #shbo:47 #shes:28 #shif:166 #shim:92 #shin:58 #shoc:-30
#shop:-57 #shou:108 #show:39 #shud:34 #shut:122 #side:67 #sien:78 #sign:55 #sigu:100 #sile:42 #sing:87 #sion:29
#skip:-35 #slic:91 #slid:81 #slip:46 #slow:53 #smel:72 #smis:-29 #smok:-164 #sobr:46 #soft:28 #sola:34 #sold:-32
#soli:41 #solo:40 #some:46 #sorr:-61 #soun:-65 #spar:72 #spas:70 #spee:82 #sper:-30 #spit:25 #spon:29 #sque:-109
#squi:38 #ssin:25 #ssur:52 #stac:58 #stal:53 #stan:-95 #star:-73 #stat:-29 #stay:60 #stea:55 #stee:135 #step:67
#ster:38 #stic:72 #stil:39 #stom:-29 #stop:97 #stoy:-61 #stre:49 #stuf:44 #sube:39 #subi:84 #suen:-26 #symb:40
#taci:57 #tail:148 #take:54 #tale:-35 #talk:-52 #tall:74 #tamb:62 #tand:73 #tard:-28 #taro:-27 #tart:-44 #team:44
#teer:138 #tele:-31 #tely:113 #temp:125 #teng:27 #tent:-55 #tera:33 #terc:26 #tere:-32 #ters:62 #test:32 #text:-112
#than:-45 #them:-34 #ther:40 #thes:-27 #they:-78 #thol:41 #thos:-84 #thre:57 #thro:55 #tick:32 #tico:48 #tiem:69
#tien:-28 #tigh:28 #tima:-50 #ting:55 #tion:32 #tira:182 #toda:103 #todo:-76 #toma:-38 #tomo:57 #tope:55 #tops:32
#tosi:41 #tota:-44 #towa:57 #trab:-70 #trac:99 #trad:-27 #trae:150 #trai:47 #tran:123 #trar:70 #trat:-28 #tree:47
#tric:33 #trie:27 #tron:36 #truc:61 #true:57 #tsel:57 #tter:-74 #ttin:25 #ttle:52 #tuff:44 #tula:-30 #turn:241
#tuvi:57 #twic:114 #ubic:-40 #ubid:63 #uces:38 #ucho:40 #udde:60 #uddl:50 #uder:-52 #ueak:-165 #ueal:58 #ueda:31
#uedo:-96 #uego:33 #uele:91 #uelv:-25 #uema:54 #uena:42 #uerz:83 #uesd:-29 #uest:40 #uete:29 #ueva:-90 #uido:-46
#uier:71 #uiet:-26 #uish:43 #uiso:69 #uita:43 #uite:-28 #uito:51 #uivo:-36 #ulde:123 #ulle:-71 #ulls:55 #ulti:-32
#umbe:-58 #umbi:40 #umbl:25 #umbr:80 #umbs:-30 #umes:38 #umpe:34 #umps:72 #unda:38 #unde:144 #unds:-116 #unge:109
#unki:38 #unni:29 #unqu:41 #unst:-34 #unta:-25 #uphi:76 #urge:25 #urin:30 #urni:74 #urns:163 #urrs:-30 #urva:30
#usad:-26 #usan:-38 #ushi:25 #uste:-53 #usto:-44 #utch:25 #utte:-27 #uvie:53 #vaca:-33 #vaci:37 #vado:-42 #vapo:43
#vece:53 #velo:83 #vend:-136 #vent:29 #verd:34 #vere:-65 #verh:60 #vern:30 #vers:105 #very:30 #vewa:97 #vibr:177
#vien:42 #ving:27 #visi:-68 #voca:-35 #vola:74 #wall:104 #ward:109 #warn:-105 #wate:26 #went:162 #were:-90 #wful:30
#what:-115 #whee:70 #when:63 #wher:38 #whic:-108 #whin:75 #whoe:-35 #whol:101 #wice:114 #wild:-28 #will:-99 #wing:41
#wipe:-183 #wire:79 #with:-127 #wobb:100 #wont:64 #wors:64 #woul:-47 #wron:-29 #xcla:77 #xhau:46 #xtin:-27 #yeah:-45
#year:-44 #ying:47 #ymbo:40 #ymor:41 #your:-155 #ysel:-29 #ythi:-71 #zumb:48 %again_later:-48 %again_later%away:-43
%again_later%busy:-50 %again_later%car:-43 %again_later%car_part:113 %again_later%do_it:64 %again_later%elsewhere:-40
%again_later%fails:98 %again_later%family:-41 %again_later%gone_car:52 %again_later%how_long:-26 %again_later%leak:45
%again_later%leave_me:72 %again_later%lift:-37 %again_later%message:-56 %again_later%noise:198
%again_later%odometer:-33 %again_later%on_way:-43 %again_later%opening:-26 %again_later%pay_day:-25
%again_later%phone:41 %again_later%question:-60 %again_later%refuse:54 %again_later%season:-66 %again_later%shake:87
%again_later%shift_it:-54 %again_later%smoke_smell:58 %again_later%start_again:82 %agree:-110 %agree%away:48
%agree%bad:69 %agree%car:-50 %agree%do_it:-33 %agree%doubt:-67 %agree%elsewhere:46 %agree%gone_car:-26 %agree%leak:50
%agree%message:-26 %agree%money:74 %agree%on_way:66 %agree%place:56 %agree%question:154 %agree%refuse:39
%agree%shake:164 %agree%smoke_smell:112 %agree%thanks:-34 %agree%wrong_one:38 %away:-104 %away%bad:32 %away%busy:-47
%away%call_off:-53 %away%car_part:77 %away%do_it:-25 %away%noise:57 %away%question:-46 %away%refuse:-55
%away%smoke_smell:49 %bad:-60 %bad%call_off:-46 %bad%car:-44 %bad%car_part:-49 %bad%fails:-33 %bad%leak:55
%bad%machine:39 %bad%meaning:48 %bad%money:33 %bad%noise:38 %bad%shake:64 %bad%staff:-27 %bring:-134
%bring%call_off:61 %bring%car:30 %bring%car_part:137 %bring%elsewhere:-32 %bring%fails:43 %bring%how_long:29
%bring%leak:25 %bring%leave_me:124 %bring%message:-31 %bring%noise:40 %bring%place:87 %bring%question:171
%bring%refuse:55 %bring%shake:26 %bring%smoke_smell:34 %bring%start_again:45 %busy:-84 %busy%call_off:-56
%busy%noise:39 %busy%question:34 %busy%refuse:-48 %busy%shake:38 %busy%shift_it:41 %busy%smoke_smell:-26
%call_off%do_it:45 %call_off%fails:-119 %call_off%how_long:69 %call_off%leave_me:103 %call_off%meaning:35
%call_off%message:-51 %call_off%money:57 %call_off%noise:-28 %call_off%odometer:-123 %call_off%on_way:62
%call_off%phone:102 %call_off%place:55 %call_off%refuse:42 %call_off%shake:65 %call_off%shift_it:41
%call_off%wrong_one:-28 %car:78 %car%car_part:56 %car%elsewhere:-35 %car%fails:254 %car%family:-41 %car%gone_car:-106
%car%leave_me:63 %car%lift:-73 %car%noise:135 %car%pay_day:54 %car%place:44 %car%question:37 %car%refuse:-35
%car%shake:93 %car%shift_it:55 %car%smoke_smell:44 %car%start_again:52 %car%thanks:-26 %car%wrong_one:-100
%car_part:433 %car_part%do_it:-234 %car_part%doubt:104 %car_part%fails:62 %car_part%family:-91 %car_part%how_long:87
%car_part%leak:110 %car_part%leave_me:208 %car_part%machine:45 %car_part%money:-88 %car_part%noise:-182
%car_part%odometer:52 %car_part%on_way:135 %car_part%opening:116 %car_part%phone:93 %car_part%place:119
%car_part%question:-39 %car_part%shake:200 %car_part%smoke_smell:211 %car_part%staff:-90 %car_part%start_again:84
%car_part%thanks:-32 %do_it:-183 %do_it%doubt:31 %do_it%fails:33 %do_it%family:-32 %do_it%gone_car:-46
%do_it%how_long:26 %do_it%leak:113 %do_it%leave_me:42 %do_it%on_way:62 %do_it%question:25 %do_it%refuse:86
%do_it%shake:27 %do_it%shift_it:59 %do_it%start_again:53 %do_it%wrong_one:-62 %doubt:64 %doubt%elsewhere:65
%doubt%money:27 %doubt%noise:55 %doubt%on_way:68 %doubt%shift_it:32 %doubt%wrong_one:43 %elsewhere:-79
%elsewhere%fails:106 %elsewhere%leak:25 %elsewhere%lift:-29 %elsewhere%phone:47 %elsewhere%place:50
%elsewhere%refuse:-52 %elsewhere%shift_it:-28 %elsewhere%staff:33 %fails:562 %fails%gone_car:103 %fails%how_long:54
%fails%leak:47 %fails%leave_me:-180 %fails%meaning:35 %fails%on_way:53 %fails%pay_day:43 %fails%phone:67
%fails%place:132 %fails%question:70 %fails%refuse:107 %fails%shake:-35 %fails%smoke_smell:-97 %fails%staff:38
%fails%start_again:28 %fails%who:-61 %fails%wrong_one:215 %family:-132 %family%gone_car:-36 %family%odometer:-70
%family%staff:76 %gone_car:-215 %gone_car%leave_me:33 %gone_car%noise:39 %gone_car%shift_it:-25
%gone_car%start_again:48 %gone_car%wrong_one:-27 %how_long:-40 %how_long%noise:73 %how_long%opening:-25
%how_long%question:-52 %how_long%shake:35 %how_long%start_again:43 %leak:406 %leak%meaning:35 %leak%money:32
%leak%on_way:68 %leak%question:143 %leak%refuse:-78 %leak%smoke_smell:-40 %leak%wrong_one:-35 %leave_me:-92
%leave_me%message:-77 %leave_me%noise:48 %leave_me%phone:50 %leave_me%place:44 %leave_me%question:68
%leave_me%refuse:37 %leave_me%season:-42 %leave_me%smoke_smell:-54 %leave_me%start_again:68 %leave_me%wrong_one:54
%lift:-79 %lift%on_way:30 %lift%place:60 %lift%refuse:-49 %machine:27 %machine%meaning:42 %machine%shake:45
%machine%wrong_one:39 %meaning%odometer:-33 %meaning%phone:36 %meaning%question:-34 %meaning%refuse:35
%meaning%shake:68 %meaning%staff:29 %message:-195 %message%place:-29 %message%question:-31 %message%start_again:-61
%money:-114 %money%noise:141 %money%refuse:50 %money%smoke_smell:80 %noise:558 %noise%odometer:96 %noise%on_way:103
%noise%pay_day:30 %noise%phone:68 %noise%place:62 %noise%question:344 %noise%refuse:83 %noise%shake:-30
%noise%shift_it:132 %noise%smoke_smell:-45 %noise%staff:39 %noise%start_again:123 %noise%wrong_one:119 %odometer:-58
%odometer%place:72 %odometer%question:-35 %odometer%refuse:-39 %odometer%shift_it:-27 %on_way:-69 %on_way%phone:33
%on_way%place:-36 %on_way%question:83 %on_way%refuse:-47 %on_way%shake:46 %on_way%smoke_smell:47 %on_way%staff:27
%on_way%start_again:49 %on_way%wrong_one:40 %opening%shift_it:-25 %pay_day:-74 %phone:-43 %phone%place:57
%phone%question:-61 %phone%refuse:43 %phone%shift_it:-25 %phone%smoke_smell:39 %phone%staff:27 %phone%start_again:55
%phone%who:-37 %phone%wrong_one:45 %place:45 %place%question:33 %place%refuse:66 %place%shake:29 %place%who:-48
%place%wrong_one:41 %question:-120 %question%refuse:66 %question%season:-25 %question%shake:206 %question%shift_it:74
%question%smoke_smell:115 %question%start_again:-63 %question%who:-69 %refuse:-87 %refuse%shift_it:77
%refuse%start_again:86 %refuse%wrong_one:98 %season:-163 %season%shift_it:-27 %season%smoke_smell:-45 %shake:620
%shake%shift_it:31 %shake%start_again:27 %shift_it:37 %shift_it%smoke_smell:25 %shift_it%wrong_one:32
%smoke_smell:561 %smoke_smell%who:-31 %smoke_smell%wrong_one:32 %staff:-52 %thanks:-130 %who:-170 %wrong_one:-134
@?:-209 @car:-115 @confirm_stop:-164 @later:-154 @nothing:32 @odometer:-57 @offers:-78 @reading:-157 @time:-46
@times:-129 @walk_in:-65 ^_a:-76 ^_airbag:64 ^_all:-25 ^_anda:82 ^_ando:-67 ^_ayer:26 ^_baja:-108 ^_battery:46
^_both:42 ^_cada:28 ^_can:-141 ^_cant:51 ^_car:216 ^_check:25 ^_como:-48 ^_congratulations:-27 ^_coolant:55
^_cranks:55 ^_cual:-31 ^_cuando:-105 ^_cuanto:-51 ^_de:-58 ^_dead:-31 ^_dice:42 ^_do:-59 ^_donde:-67 ^_el:157
^_en:-52 ^_estoy:-63 ^_feels:44 ^_fire:-50 ^_flat:-41 ^_found:66 ^_go:-31 ^_going:-51 ^_hace:59 ^_hay:71
^_headlights:34 ^_heard:46 ^_hit:-119 ^_how:-179 ^_hoy:67 ^_huele:49 ^_i:-138 ^_id:-58 ^_if:-67 ^_ill:-63 ^_im:-103
^_is:-275 ^_it:141 ^_just:-61 ^_key:60 ^_la:138 ^_las:113 ^_le:171 ^_let:-34 ^_lo:-28 ^_lost:95 ^_manana:30
^_mande:-29 ^_mas:-90 ^_meh:-34 ^_my:76 ^_no:-66 ^_not:-58 ^_on:-85 ^_one:55 ^_para:-41 ^_pedal:27 ^_pink:34
^_por:-42 ^_pull:-48 ^_que:-178 ^_quede:-83 ^_quedo:-30 ^_quit:-109 ^_rear:60 ^_running:48 ^_se:-80 ^_seat:32
^_second:33 ^_shake:-53 ^_she:30 ^_si:39 ^_smells:26 ^_smoke:-45 ^_sounds:-111 ^_start:-185 ^_steering:47 ^_still:-52
^_stop:-129 ^_stuck:-59 ^_su:-25 ^_suena:-51 ^_sure:-36 ^_takes:30 ^_temp:27 ^_tengo:47 ^_that:-40 ^_the:87
^_there:144 ^_they:-47 ^_this:-38 ^_thursday:30 ^_tiembla:59 ^_tiene:103 ^_tienen:-25 ^_tire:88 ^_todo:-76
^_tomorrow:32 ^_too:-34 ^_took:29 ^_trae:167 ^_traffic:-28 ^_unstop:-31 ^_venden:-48 ^_vibra:34 ^_we:-40 ^_were:-28
^_what:-163 ^_wheel:27 ^_when:-122 ^_whenever:-26 ^_where:-30 ^_which:-89 ^_whole:79 ^_why:-30 ^_will:-63
^_wipers:-51 ^_wont:-35 ^_y:-72 ^_ya:-113 ^_yeah:-30 ^_yes:98 ^_you:-148 ^_your:-38 a:81 a__and:97 a__at:26
a__belt:-26 a__book:-35 a__can:25 a__de:-35 a__fluid:-30 a__in:114 a__now:-56 a__on:35 a__out:-29 a__sale:-35
a__sound:36 a__tire:-43 a__under:-41 a__with:25 a_bit:37 a_coffee:50 a_como:-65 a_flat:32 a_gasolina:31 a_hacer:-33
a_jump:45 a_la:33 a_las:-80 a_line:-25 a_little:28 a_mi:-63 a_plan:-81 a_pothole:37 a_quemado:28 a_ride:-26 a_rip:26
abajo:166 abajo_$:126 able:-32 able_to:-32 about_the:-25 about_to:78 acelerador:46 adelante:-121 adelante_$:-121
adentro:32 after:38 after_a:35 after_i:60 after_the:-25 again:46 again_$:-59 agarra:75 agradece:-75 agradece_$:-51
agua:221 agua_$:125 agua_por:43 aguanta:51 aguanta_$:48 ahead:-47 ahora:54 air:84 airbag:81 airbag_light:28 aire:65
al:104 al_cien:-32 al_dar:29 al_frenar:54 al_rato:-32 alarm:-30 algo:99 alguien:27 all:36 all_$:-36 all__on:39
all__the:44 all__way:63 all_good:-54 all_over:49 all_the:71 almost:40 along:49 already:-65 already_$:-34 also:99
alternator:36 altos:40 altos_$:40 alumbran:69 am:-32 am_i:-33 amanecio:68 amanecio_sin:37 amber:39 an:-62 and:274
and__back:39 and__doesnt:-30 and__dont:43 and__is:46 and__it:35 and__no:49 and_i:26 and_it:83 and_now:96 and_the:118
and_then:30 anda:163 anda_tosiendo:34 andan:33 ando:-122 ando__en:-27 ando_en:-26 anoche:47 anticongelante:56
anticongelante_$:51 anymore:41 anything:-51 apaga:60 apago:34 apenas:39 aqui:-48 aqui_$:-48 are:-67 are__again:-52
are__the:-34 are__to:76 are_about:73 are_in:-49 arranca:28 arrancar:42 arrancar_$:29 arrastrando:33 arrastrando_$:31
arreglan:-27 as:-62 ask:-61 ask_me:-29 at:30 at_$:27 at__speed:28 at_all:-43 at_idle:43 at_my:-32 at_stop:47
at_work:-50 aunque:41 away:75 awful:30 ayer:68 azul_$:-32 bache:31 back_$:-48 back_end:59 bad:48 baja:-129 baja_$:-44
baje:35 baje_la:37 bald:40 ball:68 barely:47 bateria_no:69 battery_was:34 be:-250 be__to:-32 be_able:-31 be_there:-73
bearing:-27 been:57 been_on:29 before:29 belt_and:-39 better:-40 better_$:-38 bien:-45 bien_$:-127 bien_con:-48
bike:-58 bill:-33 black:62 blanco:56 blew:39 blinker:91 book:-48 book_it:-29 bota:27 both:52 box:29 box_$:41 brake:27
brake_$:45 brake__flush:-45 brake_fluid:-54 brake_job:-50 brakes_$:-109 brakes__grinding:32 brakes__like:25
brakes__stop:50 brakes_are:54 break:-72 brinca:46 bring:-49 broke:36 broken:60 bumper_$:35 bumps:58 bumps_$:49
burning:70 but:242 but__brakes:52 but__is:98 but__wont:28 but_it:123 but_my:41 but_the:67 but_there:51 butter:-27
butter_$:-26 by_itself:41 by_the:62 cada:94 cada_dia:26 cadena:35 calento:31 calienta:58 call_me:48 calle:-34
cambiaron:-51 cambiaron_la:-31 cambio:-44 cambio__aceite:-27 cambio_de:-34 cambios:139 came:87 came_back:26
came_on:132 came_up:-51 camina:30 can:39 can__a:26 can__check:-39 can__come:28 can__drive:-31 can__me:56
can__move:-26 can_i:-95 can_see:54 can_we:-39 cancel:-42 cancel_$:-30 cant:31 cant__in:32 cant__it:37 cant_get:68
cant_stop:34 cap:-38 car:65 car_is:-26 car_just:43 car_wont:26 carga:52 carretera:33 carretera_$:29 carro:68
carro_$:-31 carro__como:75 carro_anda:25 carro_no:38 casa:-78 casi:112 casi_no:90 catches:60 catches_$:60 change:-35
charco:41 check_engine:43 check_the:-33 chispas:71 chunk:26 cien:-32 cita:-40 cita_$:-50 climbing:27 clunk:34
clunking:38 clutch:28 cochera:36 coffee:50 cofre:29 cold:59 come:-50 come_$:-27 come_in:-48 coming_$:-37
coming_out:25 como:119 como_de:41 como_no:-28 como_sale:-35 compre:-32 con__frenos:-45 con_fierro:36 con_las:-26
con_un:-26 congratulations:-27 congratulations_you:-25 contento:-47 coolant:71 corriente:68 covered:-50 covered_$:-40
crank:38 cranks:63 crazy:42 crooked:43 cual:-43 cual_es:-29 cuando__vuelta:36 cuando_doy:36 cuando_freno:26
cuando_me:-28 cuanto:-27 cuanto__el:-27 cuesta:52 cut:25 da:94 da_miedo:28 dar:57 dash:42 dash_$:25 dash__black:25
dash_went:28 date:-26 day:-55 days:44 days_$:41 de:-77 de__bateria:35 de__llanta:-49 de__llantas:-25 de__o:-25
de_abajo:75 de_aceite:-31 de_agua:71 de_baja:-34 de_la:-34 de_las:-35 de_los:-46 de_que:-34 debajo:70 debajo_del:50
dejo_$:-25 del:63 del__esta:33 del_aceite:41 del_carro:28 desde:58 desde_el:27 desk:-36 dia:-34 dice:59 dice_que:57
did:-95 did__brakes:-28 did_it:-30 died:89 died__the:49 died_on:28 dim:26 direccion:-114 direccion_$:-96
direccion__favor:-38 direccion_por:-38 direccionales:98 do:-146 do_i:-67 do_it:-31 does__a:62 does_a:-40 doesnt:81
doesnt__anymore:33 doing:-41 done:-35 dont:54 dont_see:30 door:-184 door_$:-108 dos:38 dos_veces:29 down:148
down_$:-35 down__street:48 down__the:65 down_on:73 doy:33 doy_vuelta:35 dream:-54 drive:103 drive_$:160 drive_it:-38
drives:-142 drives__as:-57 drives_like:-83 driveway:92 driveway_$:78 driving:57 driving_$:32 drop:-32 dropped:32
drops:77 duro:-32 e_brake:25 echa:30 el:92 el__a:-79 el__de:-48 el__del:29 el__no:108 el__pero:60 el__se:138
el__va:68 el__y:52 el_aceite:-65 el_acelerador:46 el_anticongelante:53 el_cambio:-30 el_carro:55 el_de:-55
el_foquito:36 el_freeway:-32 el_freno:93 el_humo:-27 el_jueves:-34 el_martes:-26 el_mofle:32 el_motor:33 el_pedal:53
el_ruido:-34 el_sabado:-27 el_trabajo:-73 el_viernes:-36 el_volante:86 empezo:57 empezo_a:57 en:84 en__altos:40
en__calle:-25 en__carretera:34 en__casa:-51 en__cochera:30 en__freeway:-30 en__mananas:32 en__puerta:-29 en_frio:29
en_las:114 en_los:68 en_que:-35 end:87 enfrente:46 enfrente_$:33 engine:75 entran:117 entrar:68 entrar_a:26 entro:-37
entro_$:-32 equivocado:-34 equivocado_$:-29 era:-54 es:-58 es_$:-58 es_que:56 eso:-99 eso_$:-28 esta:82 esta__la:-42
esta_baja:-25 estaciono:60 estan:-84 estan_$:-69 estoy:-60 every:51 every__light:-117 every_morning:67 every_red:-117
ex:-36 exclamation:68 exclamation_mark:62 exhaust:46 fan:26 favor_$:-53 feels:139 feels_like:70 fell:-27 fell_off:29
fierro:66 fierro__fierro:36 fierro_con:36 fill:36 filled_it:25 fine_$:-61 fine_but:30 finger:31 fire:-41 first:-60
first_$:-71 fix:33 fixed:-107 fixed_$:-38 flashing:32 flat__the:67 flat_on:46 flat_out:-48 fluid:-72 fluid_$:-35
fluid_flush:-45 flush:-65 flush_$:-49 flying:47 foco:-63 foquito:45 for:-142 for__brakes:-36 for_a:26 for_the:-59
forever:36 forever_to:62 forward:53 found:48 found_a:58 free:-33 freeway_$:43 frena:105 frenar:110 frenar_$:86
freno:157 freno_$:48 frenos:-69 frenos_$:-102 friday_$:-28 friday_also:37 friday_at:-29 friend:66 frio:41 frio_$:42
from:83 from__back:26 from__the:61 from_the:34 from_under:59 front_desk:-32 front_tire:26 fue:-77 fue_la:-47
fuerza:83 fuga:100 fuga_de:52 fumes:38 garage:50 gasolina:29 gauge:25 gear:112 gear_$:62 get:86 get__on:46 get_it:89
get_my:-26 go:109 go_$:56 go_ahead:-32 goes:75 going:88 going_on:-25 going_to:-137 going_up:58 going_uphill:75
golpeteo:43 goma:49 gone:-67 gone_$:-32 good:-64 good_$:-54 got:28 got__flat:50 got_a:55 got_it:-25 gotea:32
gracias:-44 gracias_$:-73 grease:-35 great:-83 great__the:-53 green:66 grinding:73 grinds:45 grua:27 gusto:-33
guy:-59 hace:124 hace_ningun:-35 hace_un:73 hacen:-63 hacer:-41 haciendo:39 had:49 had__get:55 had_a:-28 had_to:101
hago:-36 haha:-50 haha_$:-33 hanging:38 happens__i:-25 happens_if:-25 hard:42 hard_to:31 has:-54 has__on:32 has_a:-47
has_been:35 hasta:41 hasta_el:31 hasta_que:-27 hay:52 hay_que:35 headlights:110 hear:66 heard:48 heard_a:46 help:25
help_$:-41 help__stuck:57 help_im:57 here:-114 here_$:-69 hi:-34 hi_$:-32 highway:40 highway_$:26 hill:75 hill_$:61
hills:128 hills_$:107 his:-66 his_bike:-54 hit:-63 hit__pothole:37 hit_a:42 hizo:-28 hold:111 hold_the:27 hood_$:-43
hora:-54 hora_$:-45 hot:39 how:-180 how__for:-28 how__is:-50 how__to:39 how_low:-52 how_much:-56 hoy:132
hoy__manana:-44 hoy_mismo:27 hoy_no:42 huele:95 huele_a:80 huevo:28 hum:30 humo:82 humo__al:29 humo_blanco:37
humo_negro:47 i:46 i__a:76 i__be:-80 i__down:26 i__hear:34 i__in:-26 i__it:-75 i__like:-34 i__my:27 i__on:44
i__see:82 i__smoking:-60 i__that:39 i__who:-36 i_came:-29 i_can:72 i_dont:30 i_drop:-25 i_fill:36 i_get:-78 i_have:63
i_hit:83 i_know:-34 i_left:-39 i_moved:38 i_need:-71 i_park:79 i_press:36 i_quit:-61 i_skip:-25 i_slow:28 i_stop:44
i_stopped:26 i_think:147 i_turn:30 i_was:-30 i_wont:-103 id:-62 id__to:-44 id_like:-47 idle:129 idle_$:36 if:-55
if__skip:-25 if_it:-49 igual:33 ill:-128 ill__it:-41 ill__you:-30 ill_do:-25 ill_let:-31 im:-29 im__my:-40 im__on:32
im__the:-27 im_down:-39 im_good:53 im_on:-40 im_stuck:58 in:27 in_$:-72 in__car:-34 in__garage:33 in__is:-32
in__middle:26 in__morning:-34 in__now:58 in__sidewall:33 in_a:49 in_it:-28 in_park:77 in_second:87 in_time:35
in_traffic:29 interested:-25 intersection:46 into_the:-31 is:76 is_$:-41 is__brake:-64 is__but:31 is__car:-28
is__in:43 is__like:35 is__line:-25 is__out:31 is__the:-94 is_a:-26 is_at:-37 is_cold:27 is_fixed:-49 is_getting:25
is_going:45 is_gone:-61 is_in:-55 is_it:-207 is_leaking:41 is_making:43 is_no:-27 is_on:35 is_own:41 is_perfect:-29
is_shaking:50 is_something:-29 is_stuck:37 is_the:-87 is_there:-38 is_this:-33 it:163 it_$:-251 it__a:-50 it__and:27
it__cold:27 it__down:48 it__i:-31 it__in:-36 it__into:28 it__over:25 it__own:41 it__started:27 it__the:-104
it__then:51 it__to:-63 it__when:59 it_a:-36 it_back:-43 it_died:37 it_does:80 it_doesnt:-27 it_friday:-30 it_in:-39
it_just:30 it_like:-49 it_makes:49 it_off:-43 it_on:-65 it_over:-38 it_pulls:29 it_shakes:51 it_starts:-43
it_still:79 it_takes:28 it_turns:37 it_twice:32 it_up:-31 it_when:-26 it_wont:90 itself:57 jaja:-77 jaja_$:-51
jalonea:34 jerks:39 job:-72 juego:52 jueves_$:-43 jueves__las:-27 jueves_a:-28 jueves_pero:27 jump:39 just__on:55
just_died:43 k:-33 k_$:-30 keeps:92 key:62 key_turns:60 kid:-55 kid__a:-43 kid_has:-53 knee:-63 knock:-36 know:-28
know__to:-25 know_who:-36 la__amanecio:30 la__de:49 la__del:37 la__hoy:-36 la__no:109 la__se:64 la__trae:27
la__vez:-26 la__y:-63 la_bateria:38 la_carretera:34 la_casa:-57 la_cita:-37 la_cochera:31 la_goma:48 la_hora:-53
la_llanta:101 la_manana:-25 la_otra:-26 la_palanca:39 la_pila:59 la_reversa:70 la_rueda:51 la_segunda:26
la_ultima:-26 la_velocidad:44 lado:93 lado_$:37 largo:28 largo_$:26 las:165 las_$:-51 las__ya:32 las_llantas:-57
las_luces:61 las_mananas:32 last:-72 last_night:49 last_year:-49 latch:58 latch_$:56 late:-105 late_$:-91 lately:100
lately_$:93 lavadora:-44 le:122 le__a:-71 le__cuando:70 le__un:67 le_cambiaron:-29 le_cuesta:68 le_sale:113
le_van:-29 leak:-52 leak_is:-35 leaking:51 leaks:-41 leaks_no:-61 leave:-29 left:-118 left_$:-25 left__the:-26
left_a:-98 left_blinker:91 left_on:-32 left_rear:27 let__know:-32 let_go:93 let_me:-41 let_you:-28 lets:-31 light:40
light__on:82 light_came:70 light_is:71 lights:-71 lights_$:-100 like:116 like__in:68 like__is:35 like__on:43
like__plan:-81 like_crazy:44 like_to:-40 limpiaparabrisas:-76 line:25 line_$:37 liquido:-32 little:44 little_$:30
llanta:161 llanta_$:-33 llanta__una:31 llanta_trae:27 llantas:-166 llantas_$:-87 llego:-65 llego_$:-49 lo:-137
lo__a:-40 lo__mi:-27 lol:-224 lol_$:-176 looks:60 loose:-45 loose_$:-44 los:111 los__estan:32 los__no:28
los__rechinan:-63 los__se:34 los_altos:40 los_cambios:136 los_ninos:35 losing:33 lost:81 lost_all:43 lot:-45 loud:31
louder:-52 low:-33 low_$:-46 luces:38 lug:88 luz:-56 luz__la:-42 make:-94 make_it:-91 makes:87 makes_the:44 making:65
making_a:48 manana_$:-41 mananas:32 mananas_$:35 mande:-32 marcha:122 marcha_$:91 mark:62 martes:-33 martes__el:-45
martes__le:44 martes_pero:39 mas:-78 mas_adelante:-93 me:-34 me_$:96 me__el:-101 me__en:30 me__la:-49 me__los:28
me__que:56 me__the:-29 me__tirado:27 me__un:-28 me__una:-30 me_da:-29 me_dejaron:-53 me_poncho:26 me_puede:29
me_quede:116 me_tuvieron:52 me_up:-32 me_va:53 mean:-25 mean_on:-38 mechanic:54 meh:-34 mejor:-116 menos:-28
metal:111 metal_$:65 metal__metal:30 mi:-129 mi_carro:42 mi_ex:-31 middle__the:32 miedo:28 mil:-60 miles:-31 min:-153
min_$:-107 min_late:-28 mis:-35 mismo:31 miss:-42 miss_it:-35 mofle:32 monday_$:-34 monday__it:30 monday_but:28
money:-45 more:-34 morning:76 morning_$:92 mornings:33 motor_$:31 move:-27 moved__seat:37 mph:31 much:-80 much__a:-31
much_for:-27 much_is:-35 much_to:27 mucho:30 mucho_para:32 muy:-115 muy_contento:-43 my:-98 my__car:-28 my__fell:-46
my__has:-73 my__in:-31 my__is:50 my__keeps:45 my__look:31 my__wont:49 my_brakes:99 my_car:-25 my_door:-35
my_driveway:62 my_kid:-55 my_mechanic:82 my_number:-26 my_oil:34 my_street:58 my_tire:55 my_tires:75 my_way:-64
my_work:-25 myself:-29 nada:-64 nearly:41 need:-105 need__ride:-26 need_a:-33 need_to:-65 needing:25 needle:50
negro:57 new:-125 new_$:-61 new_battery:-50 next:-117 next_door:-27 next_week:-72 ni:-100 ni__ni:-34 ni_nada:-39
night:35 night_$:35 ningun:-123 ningun_ruido:-43 ninguna:-72 ninos:35 ninos_$:59 no:46 no_$:-200 no__all:-50
no__at:-67 no__bien:83 no__dar:46 no__en:38 no__here:-25 no__it:33 no__la:44 no__lights:-104 no__los:69 no__nada:-55
no__ni:-62 no__ningun:-108 no__ninguna:-70 no__no:-127 no__on:-26 no__prender:27 no__y:35 no_agarra:70 no_and:-26
no_arranca:55 no_frena:99 no_hace:-38 no_hay:-42 no_it:31 no_leaks:-64 no_lights:-34 no_me:38 no_noise:-113
no_noises:-27 no_para:76 no_prende:86 no_puedo:31 no_quede:-28 no_quiere:109 no_quiso:69 no_rechina:-38 no_se:-27
no_sigue:38 no_sirve:25 no_smoke:-51 no_thanks:47 no_tiene:-78 no_trae:-89 no_you:-48 nobody:-34 noise:-41 noise_$:63
noise__all:-74 noise__fixed:-29 noise_at:-70 noise_that:28 noises:-41 noisy:-42 nomas_el:-43 normal:60 not:-91
not__now:-25 not__week:45 not_going:-34 not_interested:-25 not_right:-45 not_this:43 nothing:38 now_$:-113 now_it:69
now_no:38 nuevas:-64 nuevas_$:-31 number:-47 number_$:-30 nut:83 o:-94 o__de:-27 of:86 of__all:55 of_a:45 of_my:43
of_the:31 oil:-67 oil__came:25 oil_cap:-26 oil_change:-27 oil_pressure:47 oily:32 ok__the:27 ok_friday:37 old:-59
on:204 on_$:36 on__back:25 on__freeway:52 on__friday:-30 on__highway:26 on__hill:59 on__i:41 on__is:28 on__th:-51
on__way:-47 on_a:26 on_after:43 on_hills:78 on_me:98 on_my:-90 on_your:-38 once:-55 one:49 one_$:-67 one__my:37
one_is:-32 one_of:36 one_side:26 one_that:32 open:65 or:-151 or_anything:-45 otra:26 otra_vez:53 otro:-47 out:69
out_$:37 out__door:-37 out__me:56 out_front:-25 out_last:25 out_no:-42 out_on:56 over:155 over_$:33 over__the:40
over_bumps:49 over_the:28 overheating:28 overnight:30 overnight_$:29 own_$:28 oye:127 oye_que:45 oye_un:39 pads:-32
pads_are:-26 palanca:39 para__en:30 para__lado:67 para_el:-27 para_la:29 para_un:59 parado:-26 park:162 park_$:116
paro:32 pasa:-32 pasar:85 paso:44 pass:-39 pass_$:-27 past:88 past_$:47 pedal:160 pega:40 pegado:37 perfect:-35
perfect_$:-31 perfecto:-28 pero:135 pero__un:28 pero_le:63 phone:-63 phone_$:-35 pierde:117 pila:59 ping:39 pink:36
plan:-93 plan_$:-82 plastic:40 please_$:-35 point:33 pole:37 ponchada:27 popped:51 por:34 porq:30 porque:73
pothole:42 power:123 precio:-42 prende:150 prende_$:51 prender:55 prendida:-63 prendida_$:-66 prendido:-47
prendido_$:-35 prendio:61 presion:44 press:41 pressure:53 pretty:29 price:-60 price_$:-25 puddle:50 puede_$:-27
puede_ser:25 puedo:82 puerta:-35 puerta_$:-30 pull:-76 pull_my:-25 pulled:-65 pulled_a:-38 pulls:55 pump:71 purrs:-30
puse:-25 put:-44 que:157 que__agua:26 que__estan:-33 que__van:-25 que_baje:43 que_calle:-25 que_es:-41 que_la:27
que_le:-58 que_se:33 que_tanto:-25 que_ya:39 queda_pegado:40 quede_muy:-72 quede_sin:29 quedo:-178 quedo_$:-44
quedo__en:30 quedo_mi:-26 quemado:44 quemado_$:25 quiere:120 quiero:-30 quiet:-26 quiso:69 quit:-130 quit_$:-58
quit_on:63 quit_smoking:-72 quita:47 quita_$:47 radiador:41 radiador_$:27 raining:31 ramp:32 raro:57 rato:-38
reads:33 real:27 really:31 rear:67 rechinando:37 red:-77 red_light:-112 reminders:-36 reminders_$:-27 replaced:-68
replaced_the:-48 report:-36 reversa:89 reversa_$:81 reverse:71 ride:-38 right:-153 right_$:-70 right_now:-107 rip:26
roars:26 rock:25 roja:27 rojo:51 rough:72 rueda:43 ruido:88 ruido_$:41 ruidos:-110 ruidos_ni:-50 run:-25 running:29
running_late:-33 sabado:-32 said:-60 sale:135 sale_$:-51 sale__blanco:36 sale__velocidad:41 sale_humo:54 sale_un:40
say:-35 says:79 says_the:60 se:331 se__con:-53 se__en:48 se__la:-67 se__llevo:-51 se__pegado:40 se__poncho:26
se__que:46 se__sale:40 se__sola:29 se__un:52 se__va:65 se__y:51 se_agradece:-56 se_apaga:53 se_apago:27 se_calento:26
se_calienta:50 se_equivocado:-31 se_esta:30 se_fue:-45 se_jalonea:32 se_las:-26 se_le:61 se_lo:-149 se_me:151
se_oye:119 se_puede:-57 se_queda:33 se_quedo:25 se_quita:47 se_siente:25 se_va:44 seat:64 seat_belt:32 second:81
second_$:-26 second_gear:93 see:91 segunda:30 segunda_$:32 sending:-32 set:-41 shake:-99 shake__it:-53 shake_on:-53
shakes:71 she:48 shes:27 shifts:89 shimmies:88 shop:-66 shoulder:123 shoulder_$:61 showed:45 shudders:37 shut:96
shut_$:50 shuts:32 shuts_off:34 si:51 si__martes:42 si_el:42 si_pero:39 side:36 sidewall:34 siente:25 sign:-40
sigue:102 sin:83 sin_aire:29 sin_luces:26 since_i:48 since_the:-53 skip:-35 skip_the:-25 sky:33 slow:33 smell:50
smells:35 smells_like:55 smoke:-62 smoke_break:-48 smoking:-123 so:-64 so__cant:25 so_im:60 so_no:-26 sola:29
sold:-26 solo:40 some:-32 somebody__me:25 something:42 something__up:-52 something_came:-54 sooner:29 sorry:-61
sound:56 sounds:-121 sounds__a:-110 sounds_good:-43 sounds_like:-57 soy:-27 sparks:58 speed:72 speed_$:42
squeaking:-58 squeaks:-69 squealing:40 stalled:47 start:-73 start_$:-82 started:50 starts:-82 stay:56 steam:40
steering:123 step:58 stick:39 still:48 still_on:-68 stop:112 stop__time:34 stop_in:28 stopped:30 straight_$:27
street:40 street_$:36 stuck__traffic:-43 stuck_on:54 stuff:44 stuff_$:37 su:-99 sube:35 suena:-35 suena_bien:-75
suena_como:26 sure:-35 symbol:40 tail:56 tailpipe:43 take:-26 takes:92 takes__to:89 takes_forever:59 talk:-36
taller:-48 taller_$:-27 tambien:64 tarde:-29 tarde_$:-32 temp:69 tengo:62 tengo_que:27 termometro:35 texting:-31
texts:-40 th:-74 th_$:-41 than:-29 thanks_$:-43 thanks_it:39 that_$:-41 that_it:25 that_the:-28 the:32 the__and:-51
the__at:-26 the__be:-48 the__bill:-33 the__box:37 the__brake:32 the__by:-26 the__came:38 the__desk:-25 the__doesnt:73
the__down:51 the__end:53 the__from:-32 the__front:55 the__has:-27 the__if:39 the__is:38 the__it:36 the__job:-43
the__light:34 the__line:48 the__need:-37 the__next:-28 the__now:-27 the__on:-34 the__since:44 the__that:44 the__to:47
the__was:-61 the__went:112 the__were:-39 the__with:-28 the_back:112 the_battery:-30 the_belt:-49 the_brakes:-39
the_car:-46 the_door:-109 the_drive:28 the_e:25 the_freeway:54 the_garage:38 the_hill:40 the_intersection:45
the_mechanic:-29 the_middle:26 the_morning:-44 the_new:28 the_noise:44 the_oil:-36 the_old:-29 the_one:32
the_pedal:48 the_phone:-34 the_right:40 the_seat:51 the_second:-40 the_shop:-39 the_shoulder:119 the_sidewall:34
the_sky:33 the_smoke:-29 the_steering:47 the_stop:40 the_temp:41 the_texts:-25 the_th:-73 the_tires:-121 the_truck:85
the_visit:-49 the_way:80 the_wheel:65 the_wiper:-32 them:-34 then_$:-51 then_it:39 there:84 there_$:-71 there__a:166
there__no:-25 there_is:201 there_was:45 these:-27 they:-76 they__the:-50 they_replaced:-40 things:-47 think:95
think_$:121 think__it:-34 this_$:-46 this__is:-36 this__it:42 this_morning:102 this_one:-41 this_week:96 those:-84
though:55 though_$:50 three:68 through:54 through_$:26 thursday_$:-66 thursday__it:30 tiembla:80 tiene_una:54
tienen:-62 tight:25 time__hit:33 tira:52 tirada:83 tirado:27 tirando:26 tire:146 tire_$:43 tire__out:34 tire_is:47
tire_on:-41 tires:-129 tires_$:-73 tires_be:-41 tires_look:27 to:27 to__a:51 to__in:-25 to__it:45 to__my:-42
to__off:25 to__oil:-31 to__the:27 to__to:-45 to_be:-27 to_call:-36 to_cancel:-29 to_drive:-43 to_fix:37 to_get:118
to_let:66 to_make:-27 to_me:-29 to_start:68 to_stop:59 toda:31 todavia:-26 today:94 today_$:66 todo:-64 todo__con:-48
todo_bien:-89 todo_el:66 tomorrow:68 tomorrow_$:30 tomorrow_it:29 too:-28 too_much:-25 took__to:53 topes:44
tosiendo:41 totaled:-35 toward:57 toward_the:58 trabajo:-79 trabajo_$:-33 trabajo_no:-36 trae:153 trae__la:63
trae__luz:-60 trae_la:29 trae_un:85 trae_una:50 traffic_$:26 traffic_is:-32 trail:59 trail_of:59 truck:53 truena:54
tues:41 tuesday:-28 tuesday_$:-25 turn:86 turns:163 tuvieron:52 twice:114 twice_today:42 two:74 two_days:49
ultima:-26 un:182 un__al:30 un__de:31 un_golpeteo:31 un_lado:76 un_ruido:88 un_zumbido:32 una:156 una_llanta:66
una_luz:36 under:138 under__dash:29 under__hood:-32 under_me:63 under_the:68 unstop:-31 up:59 up_$:28 up__the:-26
up_at:-27 uphill:76 us:-29 usadas:-25 va:155 va_para:44 vacation:-27 vacia:38 van__hacer:-28 vapor:43 veces:53
velocidad:79 velocidad_$:79 venden:-59 vendi:-28 vendimos:-37 ver:34 verde:48 vez:26 vi:47 vibra:78 vibrates:62
viene:32 viernes:-38 visit:-52 visit_$:-51 volante:86 voy:-41 voy_a:-30 vuelta:31 vuelta_$:52 warning:-105 was:-114
was__again:38 was__on:-26 was_a:48 was_fixed:-38 water:26 way:34 way_$:-29 way_down:57 we:-106 we__it:-29 we_move:-26
week_$:-42 week_it:41 went:165 went__on:68 went_away:97 went_black:25 went_off:-26 went_out:74 were:-90 were__on:-39
wet:28 what:-110 what__a:-35 what__if:-25 what__that:26 what__the:-39 what_do:36 what_does:-43 what_happens:-27
what_is:-61 wheel:111 wheel_bearing:-27 wheel_looks:25 wheels:-39 when:102 when__i:-39 when__stop:53 when__turn:29
when_i:183 when_it:26 when_the:-38 whenever:-28 where:47 where__i:-26 where_do:-26 where_i:63 which:-104 whine:41
whining:27 who:-54 whoever:-34 whole:101 whole_car:70 will:-96 will_the:-52 window:-35 wiper:-59 wipers:-116
wipers_squeak:-78 wires:72 with:-109 with_speed:36 with_the:-76 wobbles:77 wont:64 wont__able:-30 wont__in:41
wont__it:-97 wont__there:-48 wont_be:-152 wont_go:41 wont_make:-65 wont_start:80 work:-102 works:90 works_but:65
worse:57 worse_than:33 would:-51 would_i:-30 wrong:-29 y:170 y_$:-31 y__bien:-40 y__no:42 y__se:29 y_casi:33 y_el:-28
y_las:78 y_me:-26 y_nada:32 y_no:43 y_ya:62 ya__cambiaron:-32 ya__en:30 ya__frena:60 ya__rechina:-35 ya_casi:53
ya_le:-68 ya_lo:-26 ya_ni:39 ya_no:25 ya_quedo:-50 yeah:-45 year:-43 year_$:-53 yes_$:-57 yes__works:72 yes_it:39
yes_monday:40 you:-212 you_$:-34 you__a:-96 you__my:-42 you__the:-58 you_can:26 you_check:-40 you_left:-117
you_said:-38 your:-141 zumbido:40
"""
