"""What speaks for and against `symptom`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "symptom"
BIAS = -143
WEIGHTS = """\
#abad:-38 #abaj:87 #abel:65 #abri:-62 #abro:127 #acce:43 #acci:-29 #aced:-78 #acei:48 #acel:113 #acen:-77 #acer:-53
#ache:64 #acho:53 #acie:41 #acin:33 #acio:52 #adas:-38 #adea:36 #adec:-79 #adel:-108 #aden:75 #adia:53 #adli:113
#ados:-36 #afor:33 #afte:32 #agai:45 #agar:93 #agen:-35 #agra:-108 #agua:300 #ahea:-55 #ahor:46 #ailp:49 #aini:32
#airb:94 #aire:77 #akes:256 #akin:99 #alan:61 #alar:-60 #aled:-30 #alen:94 #ales:84 #algo:95 #algu:36 #alie:78
#alin:37 #alle:-41 #alli:59 #allo:61 #almo:42 #alon:92 #alre:-75 #also:114 #alte:40 #alto:75 #alum:75 #aman:72
#amar:39 #amat:76 #ambe:41 #ambr:30 #amin:80 #amos:-90 #ampo:35 #anan:48 #anas:-34 #anca:132 #ance:-83 #anco:90
#anda:152 #andb:89 #ande:-101 #ando:232 #anec:75 #ange:-74 #angi:52 #anic:80 #anks:90 #anoc:54 #ansm:-34 #anti:56
#anto:-42 #anym:51 #anyt:-55 #apag:168 #apar:-91 #apen:41 #apor:48 #aque:-30 #aqui:-56 #arab:-64 #arag:63 #arca:-34
#arch:114 #arco:38 #arel:56 #arga:32 #argo:44 #arks:64 #arle:66 #arlo:36 #arly:50 #arni:-120 #aron:-185 #aros:50
#arpa:36 #arra:241 #arte:46 #arts:-108 #asad:-44 #asar:98 #asca:65 #ashb:49 #ashe:-46 #ashi:43 #asol:38 #asti:37
#astr:52 #atal:29 #atbe:65 #atch:71 #atel:118 #ater:-29 #ates:99 #atin:73 #atro:-48 #atte:41 #atul:-29 #auge:40
#aunq:43 #aust:53 #avad:-47 #aven:-33 #avia:-36 #avis:-29 #away:84 #awfu:34 #ayed:30 #ayer:85 #bach:53 #bado:-52
#baja:-132 #baje:37 #bajo:197 #bala:-35 #bald:41 #ball:79 #bare:56 #bble:95 #beat:-29 #been:68 #befo:33 #behi:-32
#bele:65 #belt:52 #bett:-43 #biar:-78 #bica:-44 #bida:69 #bido:50 #biem:-70 #bike:-65 #bill:-38 #bing:52 #bios:151
#blac:70 #blam:-29 #blan:50 #blar:43 #bles:89 #blew:42 #blin:159 #blow:56 #boar:46 #body:-34 #bomb:54 #bone:31
#book:-51 #boom:47 #borr:68 #bota:79 #both:45 #brak:110 #bran:48 #brat:95 #brea:-73 #brec:84 #bris:-65 #brok:108
#buen:-42 #bump:76 #burn:69 #buzz:36 #cabe:50 #cabl:30 #cada:106 #cade:37 #cado:-42 #cale:94 #cali:65 #call:-44
#camb:-80 #came:78 #cami:54 #canc:-56 #care:-35 #carg:45 #carr:92 #cart:33 #casa:-86 #casc:65 #casi:124 #catc:71
#cati:-38 #ccel:30 #ccid:-37 #ceit:48 #cele:145 #cesi:-36 #chan:-34 #char:74 #ched:-29 #chem:-29 #cher:46 #ches:67
#chis:106 #chun:31 #cias:-52 #cida:91 #cide:-34 #cing:41 #cion:31 #ckin:70 #clam:74 #clim:31 #clun:123 #clut:36
#coas:49 #coch:41 #coff:58 #cofr:31 #cold:68 #colo:29 #come:-83 #como:121 #comp:-146 #cond:78 #conf:-45 #cong:34
#cont:-87 #cool:63 #coug:45 #cove:-68 #cran:119 #crat:-68 #craz:49 #croo:47 #ctio:36 #ctri:35 #cuad:39 #cual:-80
#cuch:37 #cues:56 #curv:35 #dame:-36 #dash:67 #date:-31 #davi:-29 #dded:35 #dder:45 #ddle:75 #deal:-59 #dean:31
#deba:76 #dece:-81 #deje:-33 #dela:-111 #deme:-54 #dena:39 #dere:29 #ders:67 #desd:71 #desk:-41 #dewa:37 #diad:45
#dice:51 #dida:-71 #dido:-59 #died:100 #dier:-55 #dimo:-48 #ding:37 #dirt:-31 #dlig:121 #does:79 #doin:-46 #done:-39
#dont:55 #door:-201 #dora:-31 #down:153 #drea:-50 #dria:33 #drip:32 #driv:76 #drop:75 #duri:31 #eadl:132 #eads:55
#eady:-89 #eaks:-116 #eali:47 #eall:30 #eams:48 #eand:93 #eard:50 #earl:77 #ease:-48 #eati:38 #eave:-53 #ebaj:76
#ecal:48 #echa:91 #ecio:36 #econ:78 #ecor:-30 #ecti:32 #ecto:-39 #ectr:35 #edal:193 #edde:29 #edle:65 #eedl:65
#eels:117 #eeps:116 #eeri:137 #efor:33 #egad:108 #egro:56 #ehin:-32 #ejar:41 #ejor:-126 #elan:-50 #elea:55 #elec:31
#eler:137 #ells:34 #eloc:94 #else:-38 #elta:34 #emad:56 #emaf:33 #embl:119 #emin:-55 #emio:-60 #emos:-86 #empe:67
#empo:-29 #empt:65 #enar:131 #enas:42 #ence:59 #enda:-43 #ende:139 #endi:-190 #endo:83 #enen:-63 #enfr:60 #engi:75
#engo:59 #enos:-143 #ensi:32 #enta:108 #ente:67 #entr:132 #epla:-70 #epor:-39 #equi:-45 #erad:38 #erar:35 #erat:35
#erde:186 #erdi:-49 #erec:34 #ered:-58 #eres:-53 #erfe:-74 #erhe:68 #erin:152 #erks:48 #ermo:29 #erna:38 #erni:32
#erro:51 #ersa:95 #erse:119 #erta:-41 #ervi:78 #ervo:32 #erza:93 #esca:32 #esco:-31 #escu:88 #esde:71 #esio:53
#esnt:95 #espe:-48 #espo:41 #essa:-30 #essu:56 #esta:88 #esto:-112 #etal:176 #eteo:48 #eter:45 #ethi:34 #etra:67
#etro:32 #ette:-55 #etty:33 #evas:-73 #ever:153 #ewal:36 #eway:113 #excl:84 #exha:53 #expl:-29 #exti:-31 #exts:-43
#faro:39 #fast:31 #fect:-77 #feel:141 #fell:-48 #ffee:58 #fier:72 #fill:71 #filt:-29 #fing:30 #fire:-51 #firs:-68
#fixe:-115 #flas:37 #flic:29 #flui:-116 #flus:-80 #flyi:51 #foco:-65 #foqu:52 #fore:67 #forg:-30 #foro:33 #forw:59
#foun:52 #fren:406 #frie:67 #frio:47 #from:96 #fter:72 #fuer:103 #fuga:61 #fume:42 #fuse:56 #gado:107 #gain:45
#game:-35 #gana:-55 #gara:55 #garo:86 #garr:68 #gaso:38 #gate:53 #gaug:40 #gear:155 #gela:62 #ghwa:47 #gine:73
#ging:77 #glan:-32 #gnal:38 #goes:89 #goin:85 #golp:102 #goma:54 #gone:-66 #good:-52 #gote:75 #grac:-39 #grad:-121
#grat:-33 #grav:38 #grea:-156 #gree:67 #grin:159 #groa:32 #grua:29 #guan:53 #guna:-76 #gund:30 #gust:-35 #haci:52
#hago:-40 #haha:-58 #hake:-31 #haki:29 #hand:52 #hani:57 #harc:44 #hard:55 #hast:48 #haus:53 #hboa:48 #head:80
#hear:132 #heat:81 #heel:77 #hera:46 #hese:-34 #hich:-119 #hift:189 #high:69 #hill:307 #himm:99 #hind:-36 #hine:55
#hing:40 #hini:30 #hink:97 #hisp:79 #hizo:-32 #hock:-32 #hoev:-43 #hold:121 #hole:162 #hone:-63 #hops:34 #horn:37
#hose:-75 #houg:44 #houl:115 #hour:-38 #hous:-34 #howe:48 #hred:29 #hree:76 #hrou:53 #hudd:45 #huel:114 #huev:29
#humb:-30 #humo:112 #hump:35 #hunk:85 #huts:35 #hway:47 #iapa:-85 #iaro:-57 #ibra:188 #icen:-30 #icke:34 #icks:58
#icon:84 #idad:74 #iden:-39 #ides:53 #idew:37 #idge:-36 #idle:149 #idos:-117 #iedo:37 #iemb:96 #iend:177 #iene:29
#ient:141 #ierd:125 #iere:104 #iern:-42 #iero:-41 #ierr:72 #ifte:35 #ifts:111 #ight:-48 #ighw:47 #igna:38 #igue:123
#ilen:41 #iles:-30 #illo:34 #ills:104 #ilpi:49 #imbi:31 #imes:48 #immi:98 #imos:-49 #impi:-100 #inbo:76 #inca:60
#indi:79 #indo:-47 #inds:69 #info:-29 #ings:-45 #ingu:-217 #inin:62 #inke:111 #inks:29 #inos:41 #ints:60 #intu:124
#iona:105 #ione:-34 #iono:68 #ions:-36 #iper:-192 #ippi:53 #iqui:-37 #irad:125 #iran:29 #irba:94 #ires:-79 #irri:32
#irst:-68 #isas:-54 #ises:-30 #isio:-34 #isit:-69 #ismo:37 #ispa:75 #issi:44 #ista:44 #isto:-29 #itse:72 #itte:-33
#ittl:56 #iver:-61 #ives:-112 #ivew:93 #ivin:47 #ivoc:-38 #ixed:-115 #jaja:-112 #jalo:64 #jaro:47 #jerk:51 #join:71
#jueg:58 #jump:100 #junk:-33 #junt:-41 #keep:111 #kers:29 #kill:-39 #king:113 #knee:-73 #lace:-87 #lack:70 #lado:94
#lama:34 #lamb:29 #lamp:35 #lanc:90 #lant:101 #larm:-54 #lash:34 #last:-35 #latc:65 #lati:-33 #lava:-59 #lave:30
#lder:148 #leak:-35 #lean:64 #leav:-45 #lect:30 #left:-126 #lego:-73 #lenc:43 #lend:-38 #lent:108 #lera:112 #lero:50
#less:-33 #lets:-31 #lgui:39 #lick:160 #lide:59 #lido:32 #lien:49 #lies:32 #life:-30 #ligh:72 #like:150 #limb:31
#lina:35 #lind:60 #ling:70 #link:139 #liqu:-38 #litt:56 #llas:-38 #lleg:-79 #ller:-59 #llow:98 #lmos:44 #loci:94
#lone:59 #long:33 #look:49 #lose:31 #losi:37 #lost:86 #lowi:31 #lows:111 #lpet:57 #lpip:49 #lrea:-75 #lter:29
#ltim:-37 #ltos:54 #luce:73 #luid:-116 #lumb:71 #lunk:123 #lush:-80 #lutc:36 #lyin:49 #mach:-30 #mafo:33 #maki:69
#mand:-112 #mane:70 #marc:71 #mark:71 #mati:67 #mber:-37 #mbia:-92 #mbid:47 #mbin:30 #mbio:98 #mbla:97 #mbol:50
#mbra:75 #mech:57 #mejo:-130 #mell:78 #meno:-33 #ment:-49 #mero:-40 #meta:174 #mete:111 #meth:34 #meti:29 #mied:37
#mies:96 #mile:-31 #mina:34 #mind:-62 #mini:-29 #mism:43 #mmie:96 #mofl:36 #moke:-33 #moki:-137 #mone:-61 #mont:-29
#morn:123 #morr:69 #most:48 #mped:34 #mpez:58 #mpia:-110 #mpin:34 #mpre:-44 #much:-60 #myse:-37 #nada:-79 #nail:31
#nale:114 #nana:50 #nand:90 #nato:39 #ncel:-52 #ncho:38 #ncie:36 #ndan:36 #ndar:-36 #nded:-36 #ndem:-43 #nden:-54
#nder:212 #ndid:-125 #ndim:-40 #ndin:32 #ndio:67 #ndow:-44 #near:36 #nece:-58 #neci:83 #need:-48 #negr:66 #next:-126
#nfor:-37 #nfre:51 #ngan:-33 #ngel:62 #nger:39 #nges:105 #ngin:136 #ngra:-29 #ngun:-221 #nico:29 #nigh:64 #ning:-100
#nker:106 #nkin:61 #nner:-29 #nobo:-44 #noch:31 #nois:-109 #nomb:-29 #noon:-29 #norm:70 #nque:54 #nsio:34 #nsmi:-34
#nsto:-36 #ntan:55 #ntas:-211 #nten:-86 #ntes:-32 #ntic:62 #ntra:148 #ntre:-37 #ntur:124 #nuev:-135 #numb:-38
#nymo:51 #nyth:-49 #oard:46 #oars:30 #oast:59 #obbl:109 #obod:-44 #obre:34 #ocad:-36 #oche:71 #ocid:93 #ocks:54
#ocup:-53 #odav:-29 #oday:100 #odri:36 #oesn:95 #oeve:-43 #offe:57 #ofle:36 #oily:36 #oing:39 #oint:106 #oise:-65
#oisy:-44 #oked:53 #oken:67 #okin:-109 #olan:151 #olin:38 #olor:39 #olpe:102 #ombe:40 #ombr:-31 #omet:91 #omor:72
#ompl:-30 #ompr:-43 #onal:106 #onan:40 #once:-77 #onch:58 #onea:58 #oney:-55 #onge:63 #ongr:-29 #onte:-76 #ooke:45
#ooks:65 #oola:71 #oone:34 #open:75 #opes:47 #oppe:121 #oqui:66 #ores:-34 #orev:34 #orks:101 #orma:72 #orme:-34
#orni:122 #orqu:80 #orra:67 #orre:-30 #orri:70 #orro:81 #orry:-57 #orse:76 #orth:-31 #orwa:59 #oses:50 #osie:47
#osin:36 #osti:52 #otal:-50 #otan:34 #otea:69 #otho:44 #otro:-53 #oude:-59 #ough:179 #ould:48 #ound:-31 #ount:-32
#ouse:-30 #over:154 #owar:62 #owed:37 #ower:81 #owin:42 #pade:36 #pads:-45 #paga:110 #pago:32 #paid:-29 #pala:36
#para:-54 #park:228 #paro:33 #parp:36 #part:-31 #pasa:41 #paso:54 #past:70 #peda:192 #peed:97 #pega:74 #pena:35
#pend:-38 #perd:-70 #perf:-74 #pero:152 #perr:-31 #pers:-152 #pete:51 #pezo:65 #phil:83 #phon:-68 #piap:-85 #pier:113
#pila:62 #ping:190 #pink:39 #pipe:47 #plac:-89 #plan:-124 #plas:47 #podr:30 #poin:36 #poki:39 #pole:46 #ponc:62
#pone:-37 #popp:62 #porq:114 #port:-37 #poth:44 #pour:30 #powe:136 #pped:101 #ppin:100 #prec:-58 #prem:-60 #pren:195
#pres:130 #pret:31 #pric:-82 #pudd:55 #pued:50 #puer:-56 #pull:-99 #puls:37 #pump:93 #purr:-35 #puse:-30 #quea:-82
#qued:-159 #quid:-37 #quis:118 #quit:-60 #quiv:-39 #raba:-85 #rabr:-64 #rach:77 #ract:49 #rada:91 #rade:-119 #radi:51
#rage:61 #rail:61 #rain:108 #rake:90 #ramp:47 #ranc:104 #rank:116 #rapi:36 #raro:73 #rast:50 #ratc:-68 #rate:77
#rati:44 #rato:-44 #rave:35 #raya:-34 #raye:42 #razy:49 #rbag:91 #rcha:115 #rche:32 #rdie:-39 #reak:-80 #real:64
#ream:-35 #rear:73 #reas:-63 #reat:-97 #reca:74 #rech:42 #reci:-70 #reco:-32 #redd:35 #reen:71 #reet:40 #rega:51
#regl:-37 #rely:56 #remi:-115 #rena:250 #rend:192 #reno:74 #repl:-72 #repo:-56 #resi:53 #ress:98 #rest:-45 #rete:33
#retr:62 #reve:230 #rfec:-74 #rhea:68 #rice:-83 #ride:-45 #ridg:-35 #rido:34 #rien:136 #righ:-197 #rill:35 #rinc:72
#rind:159 #ring:103 #risa:-64 #risi:29 #rivi:57 #rmal:65 #rmom:42 #rnat:40 #rnes:-41 #rnig:34 #rnin:84 #roan:32
#roar:30 #roba:-29 #rock:89 #roja:34 #rojo:58 #roke:104 #rona:35 #rook:47 #rops:85 #roug:126 #rpad:36 #rque:59
#rrac:77 #rran:91 #rras:50 #rreg:-37 #rret:36 #rrie:66 #rros:-38 #rsec:48 #rted:55 #rtes:-43 #ruck:71 #rued:51
#ruen:65 #rvir:93 #rwar:58 #saba:-39 #saca:32 #sada:-40 #sado:-30 #said:-66 #sale:156 #sali:55 #sand:-37 #says:92
#scab:65 #scra:-66 #scre:54 #scuc:37 #sday:-35 #seat:116 #seco:99 #sect:48 #seda:-39 #self:31 #send:-55 #sera:52
#serv:105 #shbo:49 #sher:-48 #shes:35 #shif:189 #shim:99 #shin:60 #shoc:-32 #shop:-62 #shou:115 #show:41 #shre:29
#shud:45 #shut:130 #side:76 #sien:88 #sign:58 #sigu:118 #sile:41 #sing:115 #sion:38 #sito:-30 #skip:-39 #slic:100
#slid:93 #slip:52 #slow:68 #smel:78 #smis:-34 #smok:-170 #sobr:50 #soft:33 #sola:47 #sold:-37 #soli:52 #solo:46
#some:50 #sorr:-65 #soun:-70 #spar:78 #spas:75 #spee:97 #sper:-32 #spon:30 #sque:-103 #squi:52 #ssin:42 #ssur:56
#stac:66 #stal:66 #stan:-101 #star:-83 #stat:-43 #stay:64 #stea:64 #stee:150 #step:77 #ster:37 #stic:79 #stil:37
#stom:-29 #stop:117 #stoy:-70 #stre:50 #stuf:40 #sube:46 #subi:93 #susp:34 #symb:49 #taci:65 #tail:160 #take:60
#tale:-38 #talk:-55 #tall:86 #tamb:66 #tand:74 #tard:-33 #taro:-30 #tart:-51 #team:51 #teer:154 #tele:-35 #tely:124
#temp:152 #teng:30 #tent:-61 #tera:34 #terc:29 #tere:-38 #ters:67 #test:44 #text:-123 #than:-44 #them:-42 #ther:33
#thes:-34 #they:-87 #thol:44 #thos:-93 #thre:74 #thro:53 #tick:32 #tico:53 #tiem:76 #tien:-40 #tigh:30 #tima:-57
#ting:68 #tion:36 #tira:200 #toda:115 #todo:-75 #toma:-42 #tomo:62 #tope:61 #tops:38 #tosi:54 #tota:-50 #towa:62
#towe:-37 #trab:-80 #trac:110 #trad:-31 #trae:162 #trai:49 #tran:132 #trar:80 #trat:-30 #tree:49 #tric:35 #trie:35
#tron:51 #truc:68 #true:64 #tsel:72 #tter:-78 #ttin:36 #ttle:59 #tuff:40 #tula:-32 #turn:251 #tuvi:59 #twic:121
#uand:38 #ubic:-44 #ubid:69 #uces:43 #ucho:51 #udde:71 #uddl:55 #uder:-59 #ueak:-177 #ueal:75 #ueda:32 #uedo:-93
#uego:37 #uele:102 #uema:60 #uena:54 #uerz:92 #uesd:-29 #uest:40 #uete:32 #ueva:-102 #uido:-43 #uier:72 #uiet:-30
#uish:50 #uiso:79 #uita:50 #uite:-30 #uito:70 #uivo:-39 #ulde:135 #ulle:-77 #ulls:64 #ulti:-37 #umbe:-65 #umbi:47
#umbr:88 #umbs:-31 #umes:42 #umpe:35 #umps:84 #unda:31 #unde:159 #unds:-129 #unge:121 #unki:57 #unqu:44 #unst:-36
#uphi:83 #urin:35 #uris:31 #urni:81 #urns:172 #urrs:-35 #urva:35 #usad:-30 #usan:-42 #uspe:34 #uste:-69 #usto:-49
#utch:33 #uvie:55 #vaca:-34 #vaci:49 #vado:-46 #vapo:48 #vece:60 #velo:95 #vend:-150 #vent:31 #verd:34 #vere:-73
#verh:68 #vern:34 #vers:115 #very:35 #vewa:93 #vibr:192 #vien:46 #visi:-77 #voca:-37 #vola:82 #wall:113 #ward:120
#warn:-120 #went:171 #were:-103 #wful:34 #what:-118 #whee:77 #when:86 #wher:41 #whic:-125 #whin:87 #whoe:-43
#whol:111 #wice:121 #wild:-30 #will:-110 #wing:42 #wipe:-200 #wire:95 #with:-133 #wobb:109 #wont:68 #wors:72
#woul:-46 #wron:-30 #xcla:84 #xhau:53 #xtin:-31 #yeah:-61 #year:-54 #ying:48 #ymbo:49 #ymor:51 #your:-167 #ysel:-37
#ythi:-71 #zumb:57 %again_later%away:-47 %again_later%busy:-59 %again_later%car:-34 %again_later%car_part:127
%again_later%do_it:71 %again_later%elsewhere:-48 %again_later%fails:120 %again_later%family:-43
%again_later%gone_car:53 %again_later%how_long:-34 %again_later%leak:55 %again_later%leave_me:87
%again_later%lift:-44 %again_later%message:-63 %again_later%noise:235 %again_later%on_way:-40
%again_later%opening:-33 %again_later%pay_day:-32 %again_later%phone:36 %again_later%question:-54
%again_later%refuse:65 %again_later%season:-73 %again_later%shake:121 %again_later%shift_it:-68
%again_later%smoke_smell:67 %again_later%start_again:88 %agree:-120 %agree%away:41 %agree%bad:78 %agree%car:-51
%agree%do_it:-49 %agree%doubt:-75 %agree%elsewhere:62 %agree%leak:47 %agree%message:-29 %agree%money:80
%agree%on_way:75 %agree%place:60 %agree%question:162 %agree%refuse:42 %agree%shake:181 %agree%smoke_smell:136
%agree%thanks:-38 %agree%wrong_one:41 %away:-109 %away%bad:36 %away%bring:-32 %away%busy:-52 %away%call_off:-54
%away%car_part:93 %away%do_it:-40 %away%noise:74 %away%question:-57 %away%refuse:-63 %away%smoke_smell:59 %bad:-65
%bad%call_off:-55 %bad%car:-48 %bad%car_part:-62 %bad%fails:-35 %bad%leak:64 %bad%machine:44 %bad%meaning:59
%bad%money:34 %bad%noise:45 %bad%shake:71 %bad%staff:-32 %bring:-133 %bring%call_off:67 %bring%car:30
%bring%car_part:155 %bring%elsewhere:-38 %bring%fails:53 %bring%how_long:33 %bring%leave_me:135 %bring%message:-35
%bring%noise:57 %bring%odometer:32 %bring%on_way:33 %bring%place:94 %bring%question:186 %bring%refuse:72
%bring%shake:36 %bring%smoke_smell:42 %bring%start_again:43 %busy:-82 %busy%call_off:-61 %busy%fails:-35
%busy%noise:44 %busy%question:40 %busy%refuse:-54 %busy%shake:48 %busy%shift_it:42 %call_off:37 %call_off%car:56
%call_off%car_part:-30 %call_off%do_it:41 %call_off%fails:-128 %call_off%how_long:78 %call_off%leave_me:106
%call_off%meaning:42 %call_off%message:-59 %call_off%money:58 %call_off%odometer:-139 %call_off%on_way:71
%call_off%phone:100 %call_off%place:80 %call_off%refuse:58 %call_off%shake:55 %call_off%shift_it:40
%call_off%wrong_one:-48 %car:104 %car%car_part:35 %car%elsewhere:-37 %car%fails:267 %car%family:-32
%car%gone_car:-122 %car%leave_me:70 %car%lift:-74 %car%noise:156 %car%pay_day:64 %car%place:58 %car%question:40
%car%shake:106 %car%shift_it:66 %car%smoke_smell:60 %car%start_again:68 %car%thanks:-30 %car%wrong_one:-112
%car_part:406 %car_part%do_it:-273 %car_part%doubt:108 %car_part%elsewhere:-32 %car_part%fails:40
%car_part%family:-105 %car_part%how_long:95 %car_part%leak:126 %car_part%leave_me:229 %car_part%machine:50
%car_part%money:-114 %car_part%noise:-180 %car_part%odometer:39 %car_part%on_way:138 %car_part%opening:122
%car_part%phone:120 %car_part%place:114 %car_part%question:-60 %car_part%refuse:-34 %car_part%shake:220
%car_part%smoke_smell:236 %car_part%staff:-89 %car_part%start_again:73 %car_part%thanks:-38 %car_part%who:-32
%do_it:-239 %do_it%doubt:32 %do_it%family:-40 %do_it%gone_car:-51 %do_it%leak:109 %do_it%leave_me:50 %do_it%on_way:65
%do_it%refuse:87 %do_it%shift_it:54 %do_it%start_again:55 %do_it%wrong_one:-69 %doubt:73 %doubt%elsewhere:69
%doubt%noise:72 %doubt%on_way:72 %doubt%shift_it:30 %doubt%wrong_one:42 %elsewhere:-85 %elsewhere%fails:112
%elsewhere%lift:-31 %elsewhere%phone:48 %elsewhere%place:54 %elsewhere%refuse:-63 %elsewhere%shift_it:-34
%elsewhere%staff:32 %fails:595 %fails%gone_car:110 %fails%how_long:57 %fails%leak:37 %fails%leave_me:-200
%fails%meaning:33 %fails%money:-32 %fails%on_way:62 %fails%pay_day:50 %fails%phone:79 %fails%place:130
%fails%question:81 %fails%refuse:114 %fails%shake:-44 %fails%smoke_smell:-113 %fails%staff:45 %fails%start_again:36
%fails%who:-78 %fails%wrong_one:233 %family:-129 %family%gone_car:-40 %family%odometer:-80 %family%staff:85
%gone_car:-248 %gone_car%leave_me:36 %gone_car%noise:47 %gone_car%start_again:49 %gone_car%wrong_one:-34
%how_long:-55 %how_long%noise:83 %how_long%on_way:-32 %how_long%opening:-31 %how_long%question:-64 %how_long%shake:37
%how_long%start_again:46 %leak:423 %leak%meaning:40 %leak%money:35 %leak%on_way:74 %leak%question:157
%leak%refuse:-97 %leak%smoke_smell:-46 %leak%start_again:30 %leak%wrong_one:-46 %leave_me:-106 %leave_me%message:-86
%leave_me%noise:54 %leave_me%phone:50 %leave_me%place:61 %leave_me%question:77 %leave_me%refuse:32
%leave_me%season:-41 %leave_me%smoke_smell:-62 %leave_me%start_again:71 %leave_me%wrong_one:61 %lift:-89
%lift%on_way:35 %lift%place:64 %lift%refuse:-54 %machine%meaning:48 %machine%shake:49 %machine%wrong_one:38
%meaning%odometer:-35 %meaning%phone:38 %meaning%question:-43 %meaning%refuse:43 %meaning%shake:82 %meaning%staff:31
%message:-207 %message%place:-32 %message%question:-34 %message%start_again:-67 %money:-149 %money%noise:154
%money%refuse:51 %money%smoke_smell:91 %noise:705 %noise%odometer:105 %noise%on_way:114 %noise%pay_day:33
%noise%phone:78 %noise%place:69 %noise%question:401 %noise%refuse:107 %noise%shake:-50 %noise%shift_it:156
%noise%smoke_smell:-46 %noise%staff:44 %noise%start_again:146 %noise%wrong_one:128 %odometer:-57 %odometer%place:86
%odometer%question:-31 %odometer%shift_it:-29 %on_way:-71 %on_way%phone:32 %on_way%place:-44 %on_way%question:93
%on_way%refuse:-48 %on_way%shake:60 %on_way%smoke_smell:64 %on_way%start_again:58 %on_way%who:-32
%on_way%wrong_one:39 %pay_day:-86 %phone:-40 %phone%place:61 %phone%question:-65 %phone%refuse:39 %phone%shift_it:-33
%phone%smoke_smell:44 %phone%staff:44 %phone%start_again:57 %phone%who:-41 %phone%wrong_one:67 %place:63
%place%question:43 %place%refuse:75 %place%shake:33 %place%who:-60 %place%wrong_one:40 %question:-139
%question%refuse:63 %question%season:-30 %question%shake:228 %question%shift_it:71 %question%smoke_smell:130
%question%start_again:-72 %question%who:-73 %refuse:-112 %refuse%shift_it:83 %refuse%start_again:80
%refuse%wrong_one:82 %season:-180 %season%shift_it:-29 %season%smoke_smell:-48 %shake:694 %shake%shift_it:34
%shake%start_again:30 %shift_it%smoke_smell:32 %shift_it%wrong_one:34 %smoke_smell:642 %smoke_smell%start_again:29
%smoke_smell%who:-33 %smoke_smell%wrong_one:36 %staff:-50 %staff%wrong_one:36 %thanks:-141 %who:-193 %wrong_one:-174
@?:-231 @after_visit:30 @car:-115 @confirm:-29 @confirm_stop:-184 @later:-167 @odometer:-61 @offers:-106
@reading:-192 @time:-46 @times:-110 @walk_in:-64 ^_a:-89 ^_airbag:69 ^_anda:90 ^_ando:-77 ^_ayer:31 ^_baja:-119
^_battery:49 ^_both:44 ^_cada:31 ^_can:-167 ^_cant:53 ^_car:244 ^_check:30 ^_como:-51 ^_congratulations:-29
^_coolant:58 ^_cranks:56 ^_cual:-33 ^_cuando:-113 ^_cuanto:-68 ^_de:-64 ^_dead:-31 ^_desde:34 ^_dice:45 ^_do:-73
^_does:-37 ^_donde:-71 ^_el:191 ^_en:-55 ^_engine:29 ^_estoy:-71 ^_exhaust:43 ^_feels:45 ^_fire:-55 ^_flat:-53
^_found:74 ^_go:-38 ^_going:-54 ^_hace:68 ^_hay:80 ^_headlights:35 ^_heard:47 ^_hit:-138 ^_how:-204 ^_hoy:71
^_huele:53 ^_i:-141 ^_id:-66 ^_if:-75 ^_ill:-69 ^_im:-110 ^_is:-337 ^_it:166 ^_just:-76 ^_key:64 ^_la:145 ^_las:118
^_le:203 ^_let:-38 ^_lo:-31 ^_lost:106 ^_manana:32 ^_mande:-33 ^_mas:-100 ^_meh:-42 ^_my:90 ^_no:-65 ^_not:-69
^_on:-98 ^_one:75 ^_para:-46 ^_pedal:31 ^_pink:38 ^_por:-53 ^_pull:-55 ^_que:-208 ^_quede:-90 ^_quedo:-31 ^_quit:-129
^_rear:66 ^_running:56 ^_se:-47 ^_seat:36 ^_second:30 ^_shake:-58 ^_she:33 ^_si:34 ^_smells:29 ^_smoke:-47
^_sounds:-123 ^_start:-202 ^_steering:50 ^_still:-71 ^_stop:-138 ^_stuck:-69 ^_su:-29 ^_suena:-56 ^_sure:-34
^_takes:34 ^_temp:40 ^_tengo:51 ^_that:-41 ^_the:119 ^_there:153 ^_they:-51 ^_this:-42 ^_thursday:36 ^_tiembla:69
^_tiene:109 ^_tire:97 ^_todo:-80 ^_tomorrow:33 ^_too:-36 ^_trae:190 ^_traffic:-32 ^_traigo:31 ^_unstop:-33
^_venden:-54 ^_vibra:37 ^_we:-42 ^_were:-32 ^_what:-182 ^_wheel:32 ^_when:-134 ^_where:-34 ^_which:-104 ^_whole:88
^_why:-35 ^_will:-68 ^_wipers:-52 ^_wont:-42 ^_y:-85 ^_ya:-135 ^_yeah:-35 ^_yes:91 ^_you:-159 ^_your:-41 a:143
a__and:107 a__at:29 a__belt:-33 a__book:-37 a__can:34 a__de:-37 a__fluid:-38 a__for:-29 a__in:126 a__now:-56 a__on:38
a__out:-30 a__sale:-41 a__sound:41 a__tire:-46 a__under:-46 a__with:30 a_bit:40 a_coffee:59 a_como:-84 a_flat:46
a_gasolina:37 a_hacer:-37 a_jump:46 a_la:36 a_las:-93 a_little:33 a_mi:-70 a_plan:-85 a_pothole:38 a_quemado:32
a_wheel:-33 abajo:182 abajo_$:138 able:-37 able_to:-37 about_to:88 abre:29 acelerador:51 adelante:-130
adelante_$:-138 adentro:36 after:43 after_a:48 after_i:61 again:47 again_$:-67 agarra:81 agradece:-77 agradece_$:-52
agua:244 agua_$:136 agua_por:53 aguanta:55 aguanta_$:52 ahead:-55 ahead_and:-30 ahora:56 air:94 air__morning:38
air_every:38 airbag:94 airbag_light:38 aire:76 al:115 al_cien:-42 al_dar:35 al_frenar:67 al_rato:-37 alarm:-33
algo:115 alguien:39 all:43 all_$:-38 all__on:42 all__the:52 all__way:70 all_good:-57 all_over:53 all_the:79 almost:44
along:50 already:-75 already_$:-39 also:114 alternator:40 altos:47 altos_$:47 alumbran:75 am:-32 am_i:-42 amanecio:84
amanecio_sin:41 amber:41 an:-72 and:286 and__back:40 and__dont:43 and__is:57 and__it:37 and__no:54 and_it:105
and_now:108 and_the:137 and_then:34 anda:173 anda_tosiendo:39 andan:33 ando:-140 ando_en:-31 anoche:54
anticongelante:62 anticongelante_$:58 anymore:51 anything:-49 apaga:71 apago:38 apenas:41 aqui:-56 aqui_$:-57 are:-71
are__again:-61 are__the:-36 are__to:84 are_about:82 are_in:-52 arranca:36 arrancar:45 arrancar_$:32 arrastrando:38
arrastrando_$:36 arreglan:-32 as:-68 ask:-71 ask_me:-37 at:43 at__speed:31 at_all:-36 at_idle:54 at_my:-34 at_stop:48
at_work:-53 aunque:44 away:84 awful:34 ayer:81 azul_$:-38 bache:35 back_$:-55 back_end:68 bad:58 baja:-152 baja_$:-54
baje:38 baje_la:40 bald:41 ball:75 barely:56 bateria_no:79 battery_was:33 be:-275 be__to:-38 be_able:-36
be_coming:-31 be_there:-79 beater:-31 been:68 been_on:32 before:33 behind:-32 belt_and:-44 better:-43 better_$:-42
bien:-36 bien_$:-125 bien_con:-55 bike:-63 bill:-39 black:70 blanco:64 blew:42 blinker:106 book:-51 book_it:-30
bota:35 both:53 box:33 box_$:45 brake_$:49 brake__flush:-55 brake_fluid:-64 brake_job:-55 brakes_$:-127
brakes__grinding:35 brakes__like:32 brakes__stop:55 brakes_are:60 break:-81 break_down:-33 brinca:54 bring:-66
bring_it:-35 broke:40 broken:68 bumper_$:38 bumps:68 bumps_$:58 burning:78 but:272 but__brakes:56 but__is:105
but__wont:30 but_it:140 but_my:41 but_the:84 but_there:55 by_itself:53 by_the:72 cada:107 cada_dia:29 cadena:41
calendar:-32 calento:38 calienta:64 call_me:53 cambiaron:-57 cambiaron_la:-35 cambio:-53 cambio__aceite:-35
cambio_de:-43 cambios:151 came:98 came_back:31 came_on:159 came_up:-60 camina:33 can:50 can__check:-50 can__come:35
can__drive:-35 can__me:66 can_i:-100 can_see:55 can_we:-41 cancel:-43 cancel_$:-31 cant:29 cant__in:36 cant__it:41
cant_get:73 cant_stop:38 cap:-44 car:83 car__gone:-40 car_just:48 car_wont:31 care:-29 care_of:-29 carga:57
carretera:34 carretera_$:30 carro:85 carro_$:-40 carro__como:83 carro_no:48 casa:-86 casi:127 casi_no:103 catches:66
catches_$:61 change:-42 charco:44 check_engine:53 check_the:-42 chispas:76 chunk:31 cien:-43 cita:-37 cita_$:-50
climbing:31 clunk:39 clunking:57 clutch:36 cochera:46 cochera_$:29 coffee:60 cofre:31 cold:68 come:-44 come_$:-30
come_in:-51 coming_$:-42 coming_out:30 como:126 como_de:46 como_no:-31 como_sale:-41 compre:-36 con__frenos:-52
con_fierro:41 con_un:-29 congratulations:-29 contento:-52 coolant:71 corriente:75 covered:-55 covered_$:-44 crank:47
cranks:65 crazy:49 crooked:48 cual:-47 cual_es:-32 cuando:38 cuando__vuelta:41 cuando_doy:45 cuando_freno:29
cuando_me:-32 cuanto:-33 cuesta:57 da:105 da_miedo:30 dar:62 dash:45 dash_went:32 day:-61 days:51 days_$:48 de:-80
de__bateria:42 de__llanta:-60 de__o:-29 de_abajo:79 de_aceite:-43 de_agua:80 de_baja:-44 de_la:-32 de_lado:32
de_las:-40 de_los:-52 de_que:-38 debajo:76 debajo_del:54 dejo_$:-29 del:64 del__esta:37 del_aceite:41 del_carro:31
desde:71 desde_el:31 desde_que:32 desk:-41 dia:-41 dice:64 dice_que:61 did:-115 did__brakes:-32 did_it:-36 died:100
died__the:58 dim:30 direccion:-129 direccion_$:-109 direccion__favor:-46 direccion_por:-46 direccionales:115 do:-176
do_i:-87 do_it:-30 does__a:69 does_a:-41 doesnt:95 doesnt__anymore:38 doing:-46 done:-38 dont:55 dont_see:31
door:-214 door_$:-125 dos:39 dos_veces:34 down:163 down_$:-40 down__street:52 down__the:71 down_on:86 doy:42
doy_vuelta:40 dream:-53 drive:115 drive_$:180 drive_it:-44 drives:-150 drives__as:-62 drives_like:-84 driveway:87
driveway_$:75 driving:57 driving_$:33 driving_on:31 drop:-34 dropped:31 drops:85 dry:-30 duro:-35 e:30 e_brake:31
echa:33 el:160 el__a:-80 el__de:-52 el__del:34 el__no:134 el__nomas:-37 el__pero:68 el__se:157 el__va:75 el__y:66
el_aceite:-64 el_acelerador:51 el_anticongelante:60 el_cambio:-35 el_carro:76 el_de:-61 el_foquito:42 el_freeway:-34
el_freno:109 el_jueves:-37 el_mofle:36 el_motor:37 el_pedal:58 el_ruido:-35 el_sabado:-30 el_trabajo:-81
el_viernes:-41 el_volante:95 empezo:65 empezo_a:65 en:101 en__altos:47 en__carretera:36 en__casa:-56 en__cochera:37
en__freeway:-31 en__mananas:37 en__puerta:-39 en_frio:32 en_la:-32 en_las:126 en_los:78 en_que:-36 end:104
enfrente:51 enfrente_$:38 engine:62 entran:127 entrar:73 entrar_a:30 entro:-43 entro_$:-37 equivocado:-36
equivocado_$:-29 era:-63 es:-73 es_$:-66 es_la:-34 es_que:64 ese:-33 eso:-115 eso_$:-33 esta:94 esta__la:-38
estaciono:68 estan:-85 estan_$:-74 estoy:-69 every:57 every__light:-136 every_morning:73 every_red:-137 every_time:32
ex:-38 exclamation:75 exclamation_mark:67 exhaust:53 fan:30 favor_$:-54 feels:157 feels_like:77 fell:-30 fell_off:32
feo:40 fierro:76 fierro__fierro:41 fierro_con:41 fill:41 filled_it:29 fine_$:-65 fine_but:33 finger:32 fire:-58
first:-68 first_$:-82 fix:40 fixed:-115 fixed_$:-43 flashing:38 flat__the:77 flat_on:52 flat_out:-51 fluid:-114
fluid_$:-38 fluid_flush:-55 flush:-75 flush_$:-59 flying:51 foco:-69 foquito:52 for:-161 for__brakes:-41 for_a:33
for_brakes:-30 for_the:-68 forever:34 forever_$:-32 forever_to:67 forward:59 found:52 found_a:65 free:-38
freeway_$:46 frena:119 frenar:128 frenar_$:92 freno:176 freno_$:55 frenos:-94 frenos_$:-118 friday_$:-32
friday_also:42 friend:73 frio:47 frio_$:48 from:96 from__back:30 from__the:65 from_the:41 from_under:62
front_desk:-36 front_tire:29 fue:-83 fue_la:-50 fuerza:93 fuga:106 fuga_de:57 fumes:42 garage:63 gasolina:35 gauge:40
gear:118 gear_$:64 get:78 get__on:49 get_it:96 go:120 go_$:57 go_ahead:-38 goes:89 going:85 going_to:-154 going_up:62
going_uphill:82 golpeteo:48 goma:62 gone:-66 gone_$:-33 good:-63 good_$:-54 got__flat:57 got_a:64 got_it:-29 gotea:40
gracias:-52 gracias_$:-83 grease:-48 great:-96 great__the:-60 green:73 grinding:86 grinds:49 grua:29 gusto:-37
guy:-66 hace:154 hace_ningun:-35 hace_un:85 hacen:-77 hacer:-46 haciendo:42 had:46 had__get:52 had_a:-31 had_to:110
hago:-40 haha:-57 haha_$:-39 hanging:41 hard:51 hard_to:35 has:-58 has__on:36 has_a:-48 has_been:40 hasta:48
hasta_el:35 hasta_que:-31 have_the:-32 hay:61 hay_que:40 headlights:121 hear:83 heard:50 heard_a:47 help_$:-42
help__stuck:63 help_im:63 here:-128 here_$:-77 hi:-40 hi_$:-37 highway:47 highway_$:31 hill:82 hill_$:67 hills:138
hills_$:113 his:-71 his_bike:-58 hit:-79 hit__pothole:40 hit_a:45 hit_that:44 hizo:-32 hold:123 hold_the:29
hood_$:-49 hora:-57 hora_$:-47 horn:37 hot:43 how:-195 how__for:-34 how__is:-58 how__to:52 how_low:-56 how_much:-59
hoy:151 hoy__manana:-48 hoy_mismo:31 hoy_no:43 huele:107 huele_a:91 huevo:29 hum:33 humo:112 humo__al:34
humo_blanco:44 humo_negro:54 i:71 i__a:88 i__be:-88 i__down:38 i__hear:36 i__it:-87 i__like:-37 i__on:51 i__see:85
i__smoking:-62 i__that:41 i__who:-39 i_came:-31 i_can:76 i_dont:32 i_fill:42 i_get:-83 i_have:77 i_hear:35 i_hit:87
i_know:-36 i_left:-41 i_moved:38 i_need:-84 i_park:88 i_press:37 i_quit:-63 i_skip:-29 i_slow:41 i_stop:49
i_think:159 i_was:-37 i_wont:-115 id:-87 id__to:-51 id_like:-54 idle:149 idle_$:47 if:-63 if__skip:-29 if_it:-55
igual:31 ill:-141 ill__it:-43 ill__you:-31 ill_let:-32 im__my:-43 im__on:36 im_down:-39 im_good:65 im_on:-43
im_stuck:64 in:43 in_$:-88 in__car:-36 in__garage:43 in__is:-32 in__morning:-37 in__now:64 in__sidewall:36 in_a:61
in_park:82 in_second:90 in_the:48 in_time:39 in_traffic:37 interested:-30 intersection:48 into_the:-35 is:109
is_$:-48 is__brake:-71 is__but:34 is__car:-32 is__in:50 is__like:41 is__out:32 is__the:-102 is_a:-31 is_at:-46
is_cold:30 is_fixed:-58 is_going:48 is_gone:-66 is_in:-60 is_it:-220 is_leaking:49 is_making:52 is_no:-36 is_on:51
is_own:46 is_perfect:-34 is_shaking:55 is_something:-29 is_stuck:37 is_the:-99 is_there:-43 is_this:-33 it:235
it_$:-242 it__a:-53 it__and:30 it__cold:30 it__down:52 it__i:-33 it__in:-31 it__into:33 it__own:46 it__started:32
it__the:-109 it__then:57 it__to:-62 it__when:69 it_a:-39 it_back:-50 it_died:36 it_does:89 it_doesnt:-29
it_friday:-33 it_in:-46 it_is:32 it_just:36 it_like:-55 it_makes:55 it_off:-46 it_on:-83 it_over:-41 it_pulls:34
it_shakes:57 it_starts:-59 it_still:93 it_takes:33 it_turns:36 it_twice:35 it_up:-38 it_was:-31 it_wont:99 itself:72
jaja:-86 jaja_$:-57 jalonea:38 jerks:48 job:-80 juego:59 jueves_$:-49 jueves__las:-30 jueves_a:-31 jueves_pero:32
jump:47 just__on:61 just_died:51 k:-38 k_$:-36 keeps:107 keeps__air:45 key:62 key_turns:63 kid:-58 kid__a:-45
kid_has:-57 knee:-71 knock:-42 know_who:-38 la__amanecio:33 la__de:63 la__del:42 la__esta:29 la__hoy:-39 la__no:122
la__se:82 la__trae:29 la__vez:-31 la__y:-81 la_bateria:43 la_carretera:35 la_casa:-63 la_cita:-34 la_cochera:41
la_goma:51 la_hora:-58 la_llanta:110 la_manana:-34 la_otra:-30 la_palanca:46 la_pila:65 la_puerta:-31 la_reversa:77
la_rueda:60 la_suspension:34 la_ultima:-30 la_velocidad:48 lado:109 lado_$:40 largo:34 largo_$:31 las:177 las_$:-56
las__ya:31 las_llantas:-63 las_luces:66 las_mananas:37 last:-86 last_night:52 last_year:-53 latch:65 latch_$:62
late:-110 late_$:-99 lately:108 lately_$:100 lavadora:-49 le:142 le__a:-77 le__cuando:81 le__un:74 le_cambiaron:-31
le_cuesta:76 le_sale:128 le_van:-31 leak:-62 leak_is:-43 leaking:53 leaks:-43 leaks_no:-66 leave:-38 left:-126
left_$:-29 left__the:-30 left_a:-107 left_blinker:106 left_on:-38 left_rear:43 left_the:-31 let__know:-34 let_go:105
let_me:-47 let_you:-29 lets:-31 light:40 light__on:102 light_came:74 light_is:81 lights:-75 lights_$:-114 like:154
like__in:82 like__is:38 like__on:48 like__plan:-85 like_a:54 like_crazy:51 like_to:-47 limpiaparabrisas:-85 line:30
line_$:40 liquido:-37 little:56 little_$:33 llanta:179 llanta_$:-41 llanta__una:34 llanta_trae:30 llantas:-190
llantas_$:-98 llantas_usadas:-29 llego:-73 llego_$:-54 llevo_la:-30 lo:-139 lo__a:-49 lo__la:-31 lo__mi:-30 lol:-255
lol_$:-202 looks:66 loose:-49 loose_$:-47 los:117 los__estan:37 los__no:53 los__rechinan:-72 los__se:33 los_altos:47
los_cambios:147 los_ninos:42 losing:43 lost:86 lost_all:47 lot:-40 loud:35 louder:-59 low:-65 low_$:-46 luces:43
lug:99 luz:-61 luz__la:-45 make:-107 make_it:-102 makes:105 makes_a:31 makes_the:53 making:69 making_a:54
manana_$:-53 mananas:36 mananas_$:41 mande:-35 marcha:135 marcha_$:97 mark:67 martes:-33 martes__el:-43 martes__le:50
martes_pero:42 mas:-81 mas_adelante:-105 me:-65 me_$:103 me__el:-122 me__en:31 me__la:-60 me__los:35 me__que:61
me__the:-33 me__tirado:31 me__un:-37 me__una:-31 me_da:-34 me_dejaron:-62 me_poncho:35 me_puede:31 me_quede:133
me_tuvieron:53 me_up:-40 me_va:60 mean_on:-42 mechanic:57 meh:-42 mejor:-126 menos:-33 metal:133 metal_$:76
metal__metal:39 mi:-145 mi_carro:54 mi_ex:-34 middle__the:33 miedo:37 mil:-70 min:-174 min_$:-122 min_late:-31
mis:-39 mismo:37 miss:-47 miss_it:-38 missing:29 mofle:36 monday_$:-38 monday__it:32 monday_but:31 money:-52 more:-39
morning:86 morning_$:99 mornings:37 motor_$:35 moved__seat:37 mph:35 much:-84 much__a:-35 much__look:34 much_for:-32
much_is:-38 much_to:37 mucho:40 mucho_para:36 muy:-128 muy_contento:-48 my:-142 my__car:-43 my__fell:-52 my__has:-81
my__in:-37 my__is:55 my__keeps:43 my__look:32 my__wont:56 my_brakes:108 my_door:-40 my_driveway:71 my_kid:-59
my_mechanic:91 my_number:-29 my_oil:33 my_street:64 my_tire:63 my_tires:76 my_way:-68 myself:-37 nada:-78 nearly:47
necesito:-29 need:-118 need_a:-37 need_to:-76 needle:58 negro:66 new:-147 new_$:-65 new_battery:-60 next:-126
next_door:-33 next_week:-75 ni:-128 ni__ni:-39 ni_nada:-45 night:38 night_$:39 ningun:-133 ningun_ruido:-44
ninguna:-83 ninos:41 ninos_$:67 no:56 no_$:-221 no__all:-48 no__at:-67 no__bien:97 no__dar:48 no__en:43 no__here:-29
no__it:36 no__la:46 no__lights:-118 no__los:75 no__nada:-67 no__ni:-69 no__ningun:-116 no__ninguna:-80 no__no:-143
no__on:-31 no__prender:31 no__y:39 no_agarra:77 no_and:-32 no_arranca:65 no_frena:108 no_hace:-38 no_hay:-44 no_it:36
no_leaks:-70 no_lights:-40 no_me:50 no_noise:-112 no_para:90 no_prende:96 no_puedo:37 no_quede:-31 no_quiere:119
no_quiso:79 no_rechina:-42 no_se:-33 no_sigue:40 no_sirve:29 no_smoke:-50 no_thanks:55 no_tiene:-87 no_trae:-103
no_you:-57 nobody:-43 noise_$:72 noise__all:-73 noise__fixed:-32 noise_at:-68 noise_that:33 noises:-42 noisy:-44
nomas_el:-43 normal:65 not:-99 not__now:-30 not__week:45 not_going:-39 not_interested:-29 not_right:-52 not_this:43
nothing:47 now_$:-116 now_it:80 now_no:41 nuevas:-73 nuevas_$:-39 number:-53 number_$:-33 nut:95 o:-110 o__de:-32
of:91 of__all:60 of__tires:37 of_a:44 of_my:43 of_the:41 oil:-86 oil__came:31 oil_cap:-30 oil_change:-30 oil_light:29
oil_pressure:49 oily:36 ok__the:32 ok_friday:42 old:-67 on:222 on_$:30 on__driveway:30 on__freeway:55 on__friday:-33
on__highway:32 on__hill:64 on__i:42 on__is:39 on__th:-59 on__way:-44 on_after:44 on_hills:86 on_me:98 on_my:-111
on_your:-41 once:-62 one:60 one_$:-82 one__my:37 one_is:-37 one_of:52 one_that:37 open:72 or:-173 or_anything:-48
otra_vez:56 otro:-53 out:76 out_$:46 out__door:-41 out__me:58 out_front:-30 out_no:-43 out_on:57 over:170 over_$:35
over__the:42 over_bumps:58 over_the:38 overheating:30 overnight:34 overnight_$:34 own_$:32 oye:140 oye_que:46
oye_un:42 pads:-45 pads_are:-29 paint:29 palanca:46 para__en:36 para__lado:77 para_la:36 para_un:66 para_una:-31
park:164 park_$:127 paro:35 pasa:-36 pasar:92 paso:54 pass:-44 pass_$:-32 past:90 past_$:47 pedal:179 pega:41
pegado:42 perfect:-41 perfect_$:-36 perfecto:-32 pero:150 pero__un:34 pero_le:70 phone:-63 phone_$:-38 pierde:123
pila:65 ping:39 pink:39 plan:-98 plan_$:-85 plastic:44 please_$:-38 please_it:29 point:30 poking:39 pole:38
ponchada:30 poncho:33 poncho__llanta:31 popped:57 por:41 porq:34 porque:80 pothole:44 power:139 power_steering:29
precio:-47 premio:-60 prende:163 prende_$:56 prender:63 prendida:-72 prendida_$:-76 prendido:-52 prendido_$:-38
prendio:71 presion:48 press:43 pressure:56 pretty:33 price:-71 price_$:-29 puddle:55 puede_$:-36 puede_ser:29
puedo:96 puerta:-43 puerta_$:-33 pull:-87 pull_my:-29 pulled:-69 pulled_a:-41 pulls:64 pump:85 pump_the:38 purrs:-35
puse:-30 put:-52 que:139 que__estan:-34 que_baje:46 que_es:-54 que_la:31 que_le:-73 que_me:-31 que_se:38 que_ya:41
queda_pegado:44 quede_muy:-79 quede_sin:34 quedo:-189 quedo_$:-51 quedo__en:35 quedo_mi:-29 quemado:49 quiere:127
quiero:-34 quiet:-30 quiso:79 quit:-143 quit_$:-63 quit_on:69 quit_smoking:-82 quita:55 quita_$:55 radiador:45
radiador_$:30 raining:33 ramp:37 raro:68 rato:-36 reads:33 real:34 really:30 rear:81 rechinando:41 red:-88
red_light:-131 reminders:-41 reminders_$:-32 replaced:-78 replaced_the:-52 report:-38 reversa:97 reversa_$:88
reverse:81 ride:-40 right:-192 right_$:-79 right_now:-123 roars:30 rock:29 roja:30 rojo:64 rough:78 rueda:50
ruido:105 ruido_$:45 ruidos:-119 ruidos_ni:-53 running_late:-34 sabado:-35 said:-66 sale:155 sale_$:-59
sale__blanco:40 sale__velocidad:45 sale_humo:61 sale_un:46 say:-36 says:92 says_the:66 se:411 se__con:-56 se__en:56
se__la:-71 se__llevo:-60 se__pegado:44 se__poncho:35 se__que:51 se__sale:43 se__sin:29 se__sola:35 se__un:60
se__va:75 se__y:57 se_agradece:-57 se_apaga:63 se_apago:31 se_calento:30 se_calienta:54 se_equivocado:-33 se_esta:31
se_fue:-48 se_jalonea:36 se_las:-29 se_le:72 se_lo:-173 se_me:183 se_oye:129 se_prendio:31 se_puede:-67 se_queda:35
se_quedo:31 se_quita:55 se_siente:29 se_va:57 seat:70 seat_belt:36 second:75 second_$:-33 second_gear:98 see:100
segunda_$:30 sending:-36 set:-47 shake:-113 shake__it:-58 shake_on:-58 shakes:74 shaking:29 she:57 shes:34 shifts:107
shimmies:96 shop:-73 shoulder:135 shoulder_$:68 showed:48 shredded:29 shudders:48 shut:102 shut_$:53 shuts:35
shuts_off:37 si:44 si__martes:48 si_el:48 si_pero:36 side:40 sidewall:36 siente:29 sign:-44 sigue:120 sin:96
sin_aire:32 sin_luces:30 since__hit:45 since_i:51 since_the:-60 skip:-39 skip_the:-29 sky:33 slides:66 slow:45
smell:53 smells:41 smells_like:60 smoke:-58 smoke_break:-51 smoking:-137 so:-47 so__cant:30 so_im:73 so_no:-32
sola:42 sold:-30 solo:46 some:-30 something:34 something__up:-58 something_came:-59 something_that:-37 sooner:38
sorry:-65 sound:64 sounds:-134 sounds__a:-114 sounds_good:-53 sounds_like:-56 soy:-29 sparks:62 speed:86 speed_$:48
squeaking:-67 squeaks:-76 squealing:52 stalled:52 start:-75 start_$:-85 started:58 starts:-100 stay:61 steam:47
steering:137 steering_is:31 step:66 stick:40 still:48 still_on:-74 stop:124 stop__time:38 stop_in:30 stopped:39
straight_$:29 street:41 street_$:36 stuck__traffic:-49 stuck_on:59 stuff:40 stuff_$:37 su:-116 sube:42 suena:-33
suena_bien:-83 suena_como:35 sure:-33 suspension:34 symbol:49 tail:60 tailpipe:48 takes:101 takes__to:97
takes_forever:64 talk:-38 taller:-53 taller_$:-29 tambien:68 tarde:-30 tarde_$:-36 temp:90 temp__is:35 tengo:69
tengo_que:32 termometro:39 texting:-35 texts:-43 th:-89 th_$:-44 than:-30 thanks_$:-51 thanks_it:42 that_$:-42
that__the:-52 that_the:-30 the:54 the__and:-57 the__at:-36 the__be:-50 the__bill:-39 the__box:41 the__brake:39
the__by:-29 the__came:35 the__desk:-29 the__doesnt:83 the__down:56 the__end:59 the__from:-33 the__front:69 the__if:43
the__is:66 the__it:42 the__job:-47 the__light:47 the__line:52 the__need:-38 the__next:-34 the__on:-32 the__since:47
the__that:54 the__to:53 the__tower:-32 the__was:-66 the__went:131 the__were:-40 the__with:-31 the_back:128
the_battery:-34 the_belt:-53 the_brakes:-43 the_car:-45 the_door:-125 the_drive:31 the_e:31 the_fire:-34
the_freeway:58 the_garage:42 the_hill:43 the_intersection:47 the_left:30 the_light:-33 the_mechanic:-34
the_morning:-47 the_new:34 the_noise:55 the_oil:-44 the_old:-33 the_one:38 the_pedal:56 the_phone:-34 the_right:48
the_seat:51 the_second:-48 the_shop:-43 the_shoulder:131 the_sidewall:36 the_sky:33 the_smoke:-30 the_steering:52
the_stop:44 the_temp:46 the_th:-84 the_tires:-128 the_truck:96 the_visit:-56 the_way:94 the_wheel:65 the_wiper:-39
them:-42 then_$:-56 then_it:44 there:92 there_$:-77 there__a:185 there__no:-32 there_is:216 there_was:48 these:-34
they:-84 they__the:-55 they_replaced:-44 thing_$:-29 things:-54 think:102 think_$:134 think__it:-38 this_$:-53
this__is:-42 this__it:51 this_is:-29 this_morning:117 this_one:-47 this_week:105 those:-93 though:61 though_$:55
three:77 through:53 through_$:29 thursday_$:-69 thursday__it:35 tiembla:89 tiene_una:54 tienen:-69 time__hit:33
time_i:34 tira:50 tirada:95 tirado:31 tirando:31 tire:174 tire_$:58 tire__out:35 tire_is:59 tire_on:-52 tires:-160
tires_$:-88 tires_be:-43 tires_were:-38 to:32 to__a:55 to__at:34 to__in:-29 to__it:57 to__my:-48 to__off:31
to__oil:-37 to__the:39 to__to:-63 to_call:-40 to_drive:-46 to_fix:43 to_get:111 to_have:-29 to_let:73 to_make:-32
to_me:-31 to_pump:45 to_start:77 to_stop:63 toda:39 todavia:-29 today:100 today_$:70 todo:-61 todo__con:-55
todo_bien:-91 todo_el:79 tomorrow:75 tomorrow_$:32 tomorrow_it:34 too:-29 took__to:57 topes:47 tosiendo:47
totaled:-38 toward:62 toward_the:62 tower:-32 trabajo:-90 trabajo_$:-39 trabajo_no:-39 trae:164 trae__la:78
trae__luz:-68 trae_un:95 trae_una:54 traffic_$:34 traffic_is:-36 trail:65 trail_of:65 truck:60 truena:61 tues:46
turn:88 turns:172 tuvieron:53 twice:121 twice_today:48 two:86 two_days:56 ultima:-30 un:203 un__al:34 un__de:29
un_golpeteo:34 un_lado:84 un_ruido:100 un_zumbido:38 una:163 una_llanta:77 una_luz:40 under:153 under__dash:30
under__hood:-37 under_me:74 under_the:71 unstop:-33 up:61 up_$:37 up__the:-29 up__to:-29 up_at:-29 uphill:83 us:-31
usadas:-29 va:176 va_de:29 va_para:50 vacia:50 van__hacer:-30 vapor:48 veces:60 velocidad:90 velocidad_$:90
venden:-67 venden_llantas:-31 vendi:-31 vendimos:-40 ver:48 verde:51 vi:51 vibra:84 vibrates:67 viene:34 viernes:-41
visit:-60 visit_$:-58 volante:95 voy:-45 voy_a:-35 vuelta:36 vuelta_$:61 warning:-120 was:-125 was__again:38
was__on:-30 was_a:53 was_fixed:-41 washer:-40 way:48 way_$:-29 way_down:62 we:-115 we__it:-29 week_$:-37 week_it:42
went:175 went__on:74 went_away:114 went_out:78 were:-102 were__on:-46 wet:38 what:-112 what__a:-38 what__that:30
what__the:-47 what__you:29 what_do:40 what_does:-46 what_happens:-31 what_is:-61 wheel:119 wheels:-40 when:124
when__i:-42 when__stop:59 when__turn:33 when_i:216 when_the:-40 where:48 where__i:-29 where_do:-29 where_i:72
which:-120 whine:47 whining:30 who:-56 whoever:-42 whole:111 whole_car:74 will:-107 will_the:-54 window:-37 wiper:-67
wipers:-123 wipers_squeak:-87 wires:87 with:-114 with_speed:41 with_the:-82 wobbles:83 wont:68 wont__able:-35
wont__coming:-31 wont__in:46 wont__it:-111 wont__there:-51 wont_be:-174 wont_go:46 wont_make:-76 wont_start:91
work:-104 works:101 works_but:73 worse:64 worse_than:37 would:-51 would_i:-33 wrong:-30 y:183 y_$:-38 y__bien:-44
y__lo:-32 y__no:52 y__se:30 y_casi:37 y_el:-31 y_las:92 y_me:-30 y_nada:38 y_no:48 y_ya:76 ya:-31 ya__cambiaron:-35
ya__en:29 ya__frena:64 ya__rechina:-39 ya_casi:61 ya_le:-80 ya_ni:44 ya_quedo:-55 yeah:-61 year:-44 year_$:-53
yes_$:-64 yes__works:81 yes_it:46 yes_monday:45 you:-211 you_$:-36 you__a:-109 you__it:34 you__my:-48 you__the:-62
you_check:-50 you_left:-137 you_said:-38 your:-153 zumbido:47
"""
