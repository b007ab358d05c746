"""What speaks for and against `symptom`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "symptom"
BIAS = -123
WEIGHTS = """\
#abad:-24 #abaj:61 #abel:38 #abla:-19 #able:-20 #abri:-31 #abro:77 #acce:20 #aced:-54 #acei:32 #acel:75 #acen:-46
#acer:-27 #ache:26 #acho:34 #acie:29 #acin:21 #acio:26 #acki:19 #adas:-26 #adea:25 #adec:-46 #adel:-67 #aden:38
#adia:41 #adli:73 #afor:20 #afte:26 #agar:70 #agen:-21 #agra:-67 #agua:183 #ahea:-32 #ailp:33 #aini:20 #airb:60
#aire:41 #akes:181 #akin:75 #alan:33 #alar:-37 #aled:-18 #alen:69 #ales:52 #algo:61 #algu:18 #alie:40 #alli:40
#allo:41 #almo:23 #alon:63 #alre:-45 #also:68 #alte:23 #alto:53 #alum:49 #aman:37 #amar:20 #amat:44 #ambe:23 #amin:35
#amos:-57 #ampo:22 #anan:27 #anca:80 #ance:-54 #anco:61 #anda:114 #andb:55 #ande:-66 #ando:174 #anec:36 #ange:-53
#angi:41 #anic:43 #anks:45 #anoc:26 #ansm:-23 #anta:23 #ante:23 #anti:36 #anto:-35 #anym:29 #anyt:-29 #apag:113
#apar:-48 #apen:27 #apor:38 #aqui:-45 #arab:-33 #arag:36 #arca:-20 #arch:68 #arco:29 #arel:38 #arga:30 #argo:31
#arks:40 #arle:19 #arlo:20 #arly:34 #arni:-74 #aron:-112 #aros:30 #arpa:25 #arra:154 #arte:32 #arts:-66 #asad:-24
#asar:67 #asca:38 #ashb:32 #ashi:32 #asti:21 #astr:35 #atal:21 #atbe:41 #atch:49 #atel:76 #ater:-20 #ates:72 #atin:55
#ator:22 #atro:-31 #atte:24 #atul:-18 #auge:21 #aunq:32 #aust:34 #avad:-26 #aven:-21 #avia:-23 #avis:-18 #away:60
#ayer:53 #bach:26 #bado:-34 #baja:-91 #baje:24 #bajo:141 #ball:56 #bare:38 #bata:18 #bble:65 #been:34 #belt:37
#bett:-20 #biar:-46 #bica:-24 #bida:48 #bido:31 #biem:-42 #bike:-42 #bill:-33 #bing:29 #bios:93 #blac:43 #blan:40
#blar:19 #bles:54 #blew:31 #blin:92 #blow:35 #boar:31 #bomb:29 #book:-40 #boom:31 #borr:42 #bota:29 #both:34 #brak:74
#bran:23 #brat:71 #brea:-44 #brin:25 #bris:-34 #brok:74 #buen:-26 #bump:49 #burn:48 #buzz:30 #cabe:30 #cada:61
#cado:-23 #cale:70 #cali:41 #call:-34 #camb:-51 #came:39 #cami:22 #canc:-37 #cape:19 #carg:40 #carr:66 #casa:-48
#casc:38 #casi:67 #catc:48 #cati:-27 #ccel:21 #ccid:-23 #ceit:32 #cele:103 #cesi:-18 #chad:18 #chan:-31 #char:40
#chec:19 #ched:-26 #chem:-19 #cher:27 #ches:34 #chis:67 #chor:22 #chun:20 #cias:-29 #cida:67 #cide:-20 #cien:29
#ciga:-21 #cing:25 #cion:23 #cita:-28 #ckin:45 #clam:49 #clic:30 #clun:61 #clut:19 #coas:33 #coch:27 #coff:38
#cofr:24 #cold:45 #colo:24 #come:-54 #como:111 #comp:-77 #cond:56 #conf:-34 #cong:19 #cont:-55 #cool:46 #cosa:18
#coul:-24 #cove:-43 #cran:83 #crat:-39 #craz:35 #croo:33 #ctio:19 #ctri:22 #cuad:30 #cual:-49 #cuat:-19 #cuch:20
#cues:44 #curv:24 #dame:-18 #dash:50 #davi:-18 #dawn:-21 #dded:18 #ddle:52 #deal:-40 #deba:56 #dece:-47 #dela:-69
#deme:-30 #ders:26 #desd:46 #desk:-24 #dewa:24 #diad:25 #diat:24 #dice:37 #dida:-44 #dido:-36 #died:67 #dier:-43
#digo:-20 #dimo:-30 #ding:40 #dirt:-21 #dlig:79 #does:58 #doin:-28 #done:-42 #dont:30 #door:-136 #dore:-27 #down:103
#drea:-33 #driv:72 #drop:38 #duri:23 #eadl:88 #eads:25 #eady:-52 #eaks:-61 #eali:20 #eall:19 #eams:31 #eand:68
#eard:34 #earl:45 #ease:-38 #eati:32 #eave:-25 #ebaj:56 #ecal:34 #echa:50 #econ:56 #ecto:-20 #ectr:22 #edal:132
#edes:-24 #edin:18 #edle:42 #eedi:18 #eedl:42 #eels:77 #eeps:79 #eeri:93 #eewa:19 #egad:70 #egla:-21 #egro:41
#eird:18 #eite:32 #ejor:-71 #elan:-32 #elea:37 #elec:20 #eler:91 #ells:31 #eloc:70 #else:-22 #elta:30 #emad:36
#emaf:20 #embl:81 #emin:-32 #emos:-51 #empe:37 #empt:42 #enar:88 #enas:29 #ence:38 #enci:18 #enda:-24 #ende:102
#endi:-136 #endo:43 #enen:-40 #enfr:41 #engi:82 #engo:26 #enos:-79 #ensa:-21 #ense:18 #ensi:18 #enso:18 #enta:84
#ente:65 #entr:94 #epla:-47 #epor:-24 #equi:-27 #erad:22 #eran:-19 #erat:29 #erce:18 #erde:113 #erdi:-26 #ered:-41
#eres:-27 #erfe:-41 #erhe:50 #erin:102 #erks:28 #ermo:25 #erna:22 #erne:-18 #erro:24 #ersa:66 #erse:78 #ervi:47
#ervo:20 #erza:53 #esca:27 #escu:56 #esde:46 #eset:-18 #esio:36 #esnt:55 #espe:-44 #espo:27 #essa:-22 #essu:35
#esta:62 #esto:-64 #etal:114 #eteo:33 #eter:34 #ethi:34 #etra:36 #etro:23 #ette:-29 #eutr:20 #evas:-48 #even:18
#ever:127 #ewal:23 #eway:91 #excl:57 #exha:34 #exti:-24 #exts:-35 #falt:-20 #faro:21 #fast:19 #fect:-43 #feel:105
#fell:-19 #ffee:38 #ffic:-19 #fier:31 #fill:39 #fine:-28 #fing:19 #firs:-45 #fixe:-90 #flas:26 #flat:21 #flic:18
#flui:-56 #flus:-49 #foco:-42 #foll:18 #foqu:33 #fore:39 #forg:-18 #foro:20 #forw:37 #foun:38 #fren:272 #frid:-25
#frie:40 #frio:34 #from:66 #fter:51 #fuer:54 #fuga:34 #fuse:37 #gado:78 #game:-21 #gana:-29 #gara:32 #garo:54
#garr:48 #gate:32 #gaug:21 #gear:104 #gela:38 #ghwa:40 #gine:81 #ging:51 #gnal:27 #goes:49 #goin:69 #golp:67 #goma:33
#gone:-43 #good:-44 #gote:44 #grac:-18 #grad:-76 #grat:-21 #grav:18 #grea:-101 #gree:49 #grin:116 #groa:25 #guan:43
#guna:-44 #gund:20 #gust:-23 #habl:-27 #hace:29 #haci:27 #hada:19 #haha:-33 #haki:20 #hand:35 #hani:34 #hank:-31
#harc:29 #hard:33 #hast:18 #haus:34 #hboa:32 #head:48 #hear:77 #heat:58 #heck:18 #heel:52 #help:20 #hera:26 #hese:-22
#hich:-76 #hift:115 #high:54 #hill:205 #himm:62 #hine:33 #hing:56 #hink:66 #hisp:49 #hock:-20 #hoev:-26 #hold:86
#hole:108 #home:20 #hone:-43 #hops:22 #hora:-18 #hors:19 #hose:-48 #houg:36 #houl:67 #hour:-25 #howe:29 #hree:54
#hrou:47 #huel:80 #huev:26 #humb:-22 #humo:88 #hump:25 #hunk:55 #huts:26 #hway:40 #iapa:-49 #iaro:-34 #ibra:118
#icke:21 #icks:37 #icon:51 #idad:56 #iday:-26 #idea:22 #iden:-25 #ides:25 #idew:24 #idge:-21 #idle:93 #idos:-71
#iemb:64 #iend:105 #iene:29 #ient:108 #ierd:83 #iere:79 #iern:-29 #iero:-32 #ierr:29 #ifte:21 #ifts:67 #igar:-21
#ight:-25 #ighw:40 #igna:27 #igue:68 #ilen:27 #iles:-26 #illo:23 #ills:86 #ilpi:33 #imes:27 #immi:58 #imos:-34
#impi:-70 #inca:43 #ince:-20 #indi:60 #indo:-30 #inds:44 #info:-22 #ingu:-130 #inin:32 #inke:66 #inks:22 #inos:29
#ints:39 #intu:77 #iona:65 #ione:-21 #iono:42 #ions:-25 #iper:-125 #ippi:36 #iqui:-25 #irad:70 #iran:24 #irba:60
#ires:-78 #irri:23 #irst:-45 #isan:-19 #isap:18 #isas:-25 #isio:-18 #isit:-44 #ismo:33 #isnt:-21 #ispa:46 #isse:19
#ista:26 #isto:-19 #itse:45 #ittl:30 #iver:-38 #ives:-64 #ivew:67 #ivin:28 #ivoc:-21 #ixed:-90 #jaja:-47 #jalo:45
#jaro:29 #jerk:30 #join:48 #jueg:34 #jump:53 #junt:-24 #keep:73 #king:65 #knee:-46 #know:-19 #lace:-71 #lack:42
#lado:54 #lama:32 #lamp:26 #lanc:73 #lank:19 #lant:89 #larg:19 #larm:-32 #lash:23 #last:-22 #latc:40 #lati:-20
#lava:-29 #lave:23 #lder:94 #lean:42 #leav:-26 #lect:19 #left:-80 #lego:-55 #lenc:30 #lend:-21 #lent:77 #lera:76
#lero:37 #lgui:21 #lick:112 #lide:32 #lido:24 #lien:25 #lies:22 #life:-18 #ligh:62 #like:121 #limp:-20 #lind:36
#ling:39 #link:78 #liqu:-26 #litt:30 #llas:-39 #lleg:-71 #ller:-31 #llow:67 #lmos:24 #loci:70 #lone:44 #look:46
#lora:20 #lost:53 #lowi:22 #lows:70 #lpet:40 #lpip:33 #lrea:-45 #lter:18 #ltim:-21 #ltos:38 #luce:51 #luid:-56
#lumb:47 #lunk:61 #lush:-49 #lutc:19 #lyin:33 #mach:-20 #mado:19 #mafo:20 #maki:47 #mand:-70 #mane:30 #many:-18
#marc:50 #mark:47 #mati:40 #mber:-30 #mbia:-51 #mbid:32 #mbio:60 #mbla:63 #mbol:28 #mbra:49 #mech:34 #mejo:-75
#mell:62 #meno:-21 #ment:-35 #mero:-25 #meta:113 #mete:73 #meth:34 #mies:56 #mile:-25 #mill:-24 #mind:-38 #misi:-18
#mism:38 #miss:-43 #mmie:56 #mofl:30 #moki:-79 #mome:18 #mone:-35 #mont:-21 #morn:86 #morr:38 #most:34 #mped:19
#mpez:27 #mpia:-75 #mpre:-24 #much:-57 #myse:-24 #nada:-39 #nale:71 #nana:27 #nand:43 #nato:23 #ncar:20 #ncel:-34
#ncha:23 #ncho:20 #ncie:27 #ncon:-19 #ndan:22 #ndar:-24 #nded:-20 #ndem:-24 #nden:-30 #nder:134 #ndid:-77 #ndim:-24
#ndin:35 #ndio:35 #ndow:-24 #near:20 #nece:-36 #neci:43 #need:-35 #negr:47 #neut:20 #next:-79 #nfor:-24 #nfre:34
#ngel:38 #nger:24 #nges:66 #ngin:129 #ngra:-18 #ngun:-134 #nigh:29 #ning:-50 #nino:22 #nker:64 #nkin:25 #nner:-19
#nobo:-23 #nois:-64 #norm:45 #noth:18 #nque:44 #nsio:20 #nsmi:-23 #nsor:19 #nsto:-20 #ntan:40 #ntas:-129 #nten:-46
#ntes:-27 #ntic:38 #ntra:94 #ntre:-25 #ntro:25 #ntur:76 #nuev:-88 #numb:-31 #nymo:29 #nyth:-23 #oard:31 #oast:41
#obbl:74 #obod:-23 #obre:29 #ocad:-21 #oche:40 #ocid:69 #ocks:33 #ocup:-25 #odav:-18 #oday:68 #odri:27 #oesn:55
#oeve:-26 #offe:37 #ofle:30 #ofre:24 #oing:41 #oint:68 #oise:-35 #oisy:-29 #oked:37 #oken:42 #okin:-71 #olan:103
#ollo:18 #olor:33 #olpe:67 #omet:73 #omor:38 #ompr:-24 #onal:68 #onan:24 #once:-36 #onch:33 #onea:38 #oney:-32
#onge:36 #ongr:-18 #onid:18 #onte:-48 #ooke:32 #ooks:53 #oola:43 #oose:19 #oost:20 #open:48 #oppe:73 #oqui:39
#ores:-34 #orev:23 #orgo:-18 #orks:60 #orma:47 #orme:-20 #orni:88 #orqu:37 #orra:41 #orri:35 #orro:50 #orry:-45
#orse:47 #orth:-21 #orwa:37 #oses:32 #osie:27 #oste:20 #osti:31 #otal:-34 #otan:23 #otea:38 #othi:33 #otho:28
#otro:-34 #oude:-36 #ough:120 #ould:22 #over:109 #owar:40 #owed:21 #ower:72 #owin:30 #pade:25 #pads:-47 #paga:71
#pago:24 #pala:32 #para:-50 #park:150 #paro:26 #parp:25 #part:-21 #pasa:22 #paso:33 #past:37 #peda:131 #peed:66
#pega:52 #pena:23 #perd:-39 #perf:-41 #pero:93 #pers:-100 #pete:36 #pezo:29 #phil:52 #phon:-48 #piap:-49 #pick:-21
#pier:75 #pila:39 #ping:98 #pink:27 #pipe:33 #plac:-73 #plan:-80 #plas:26 #podr:23 #poin:20 #pole:28 #ponc:36
#pone:-20 #popp:42 #porq:65 #port:-32 #poth:28 #pour:21 #powe:89 #pped:71 #ppin:54 #prec:-39 #pren:123 #pres:84
#pric:-56 #pudd:39 #pued:30 #puer:-21 #pull:-44 #puls:19 #pump:57 #purr:-18 #quea:-51 #qued:-112 #quem:26 #quid:-26
#quis:73 #quit:-35 #quiv:-23 #raba:-43 #rabr:-33 #ract:29 #rada:44 #rade:-76 #radi:28 #rage:35 #rail:40 #rain:56
#rake:65 #ramp:28 #ranc:56 #rand:19 #rank:79 #raro:43 #rast:32 #ratc:-39 #rate:51 #rati:32 #rato:-30 #raye:24
#razy:35 #rbag:57 #rcha:83 #read:-21 #reak:-45 #real:43 #ream:-27 #rear:39 #reas:-40 #reat:-61 #reca:58 #rech:23
#reci:-45 #reen:50 #reet:25 #reew:19 #rega:31 #regl:-29 #rely:38 #remi:-63 #rena:159 #rend:122 #reno:72 #rent:20
#repl:-48 #repo:-34 #rese:-21 #resi:36 #ress:59 #rest:-24 #rete:23 #retr:37 #reve:155 #rfec:-41 #rgot:-18 #rhea:50
#rice:-57 #rida:-26 #ride:-31 #ridg:-21 #rido:25 #rien:86 #righ:-123 #rill:32 #rinc:53 #rind:116 #ring:74 #risa:-33
#risi:22 #rite:-20 #rive:32 #rivi:34 #rmal:41 #rmom:29 #rnes:-28 #rnin:67 #road:-24 #roan:25 #roba:-20 #roca:-26
#rock:57 #roja:26 #rojo:30 #roke:74 #rong:-19 #roni:18 #rook:33 #rops:44 #roug:94 #rpad:25 #rque:27 #rran:56 #rras:32
#rreg:-29 #rret:25 #rrie:37 #rsda:-23 #rsec:29 #rted:29 #rter:19 #rtes:-25 #ruck:43 #rued:28 #ruen:46 #rust:18
#rwar:37 #saba:-25 #saca:24 #sada:-26 #said:-42 #sale:111 #sali:24 #sand:-25 #sapp:18 #says:45 #scab:38 #scap:18
#scra:-39 #scre:27 #scuc:20 #sday:-33 #seas:-19 #seat:74 #seco:63 #sect:29 #self:19 #send:-35 #seno:22 #sens:19
#sera:24 #serv:64 #shbo:32 #shie:19 #shif:115 #shim:62 #shin:46 #shoc:-20 #shop:-45 #shou:66 #show:22 #shut:87
#side:49 #sien:62 #sign:46 #sigu:67 #sile:27 #sing:39 #sion:29 #skip:-23 #slam:20 #slic:64 #slid:53 #slip:35 #slow:42
#smel:62 #smis:-23 #smok:-93 #sobr:38 #soft:18 #sola:25 #sold:-24 #soli:21 #solo:38 #some:36 #sorr:-51 #soun:-33
#spar:52 #spas:46 #spec:-18 #spee:66 #sper:-33 #spon:19 #sque:-64 #squi:27 #ssur:35 #stac:39 #stal:49 #stan:-48
#star:-55 #stas:20 #stay:38 #stea:33 #stee:91 #step:49 #ster:27 #stic:56 #stil:22 #stom:-21 #stop:71 #stoy:-41
#stre:32 #stuf:30 #sube:35 #subi:46 #sure:18 #susp:19 #symb:27 #taci:39 #tail:99 #take:33 #tale:-26 #talk:-32
#tall:70 #tamb:43 #tand:56 #taro:-22 #tart:-37 #team:24 #tede:-24 #teer:93 #tele:-22 #tely:80 #temp:89 #tent:-37
#tera:25 #ters:44 #test:25 #text:-95 #than:-59 #them:-28 #thes:-22 #they:-61 #thin:46 #thol:28 #thos:-58 #thou:22
#thre:48 #thro:49 #tick:29 #tico:29 #tiem:58 #tigh:21 #tima:-34 #ting:61 #tion:23 #tira:133 #tire:-40 #toda:76
#todo:-45 #toma:-27 #tomo:37 #tope:44 #tops:28 #tora:-20 #tosi:27 #tota:-34 #towa:40 #trab:-39 #trac:72 #trad:-21
#trae:105 #trai:33 #tral:20 #tran:86 #trar:53 #trat:-19 #tree:32 #tric:22 #trip:-19 #troc:-26 #trol:18 #tron:24
#truc:41 #true:45 #tsel:45 #tter:-45 #ttin:26 #ttle:37 #tuff:30 #tula:-20 #turn:167 #tuvi:40 #twic:69 #uand:43
#uatr:-19 #ubic:-24 #ubid:48 #uces:27 #ucho:42 #udde:28 #uddl:39 #uder:-36 #ueak:-102 #ueal:38 #ueda:22 #uedo:-66
#uego:22 #uele:73 #uelt:30 #uema:43 #uena:44 #ueno:-19 #uerz:53 #uest:28 #uete:22 #ueva:-70 #uido:-37 #uier:52
#uish:31 #uiso:50 #uita:32 #uito:43 #uivo:-23 #ulde:83 #ulle:-51 #ulls:47 #ulti:-21 #umbe:-45 #umbi:32 #umbl:18
#umbr:60 #umbs:-22 #umpe:20 #umps:52 #unda:25 #unde:100 #unds:-73 #unge:76 #unki:28 #unqu:32 #unst:-20 #unta:-21
#uphi:52 #urin:18 #urni:55 #urns:114 #ursd:-23 #urva:24 #usad:-20 #usan:-26 #ushi:19 #uspe:19 #uste:-37 #usto:-34
#utra:20 #utte:-19 #uvie:40 #vaca:-23 #vaci:24 #vado:-26 #vapo:38 #vece:35 #velo:71 #vend:-100 #vent:22 #verd:20
#vere:-45 #verh:50 #vers:77 #very:27 #vewa:67 #vibr:120 #vien:33 #visi:-45 #voca:-21 #vola:61 #wall:74 #want:-18
#ward:76 #warn:-74 #wate:25 #weir:18 #went:115 #were:-60 #what:-111 #whee:52 #when:101 #wher:18 #whic:-82 #whin:44
#whoe:-26 #whol:77 #wice:69 #wild:-20 #will:-76 #wing:29 #wipe:-133 #wire:54 #with:-88 #wobb:74 #wont:48 #wors:39
#woul:-21 #writ:-19 #wron:-22 #xcla:57 #xhau:34 #xtin:-24 #yeah:-49 #year:-26 #ying:31 #ymbo:27 #ymor:29 #your:-119
#ysel:-24 #ythi:-33 #zumb:40 %again_later%away:-24 %again_later%busy:-32 %again_later%car_part:110
%again_later%elsewhere:-34 %again_later%fails:70 %again_later%family:-28 %again_later%gone_car:38
%again_later%leak:26 %again_later%leave_me:45 %again_later%lift:-26 %again_later%message:-48 %again_later%noise:141
%again_later%pay_day:-35 %again_later%phone:23 %again_later%refuse:33 %again_later%season:-57 %again_later%shake:58
%again_later%shift_it:-50 %again_later%smoke_smell:61 %again_later%start_again:48 %agree:-117 %agree%away:35
%agree%bad:48 %agree%bring:-22 %agree%car:-23 %agree%car_part:18 %agree%do_it:-20 %agree%doubt:-42
%agree%elsewhere:39 %agree%family:-22 %agree%leak:34 %agree%message:-20 %agree%money:57 %agree%noise:31
%agree%on_way:43 %agree%place:43 %agree%question:102 %agree%shake:120 %agree%shift_it:-29 %agree%smoke_smell:106
%agree%thanks:-29 %away:-76 %away%bad:29 %away%busy:-34 %away%call_off:-29 %away%car_part:71 %away%money:21
%away%noise:49 %away%place:-29 %away%question:-45 %away%refuse:-48 %away%smoke_smell:35 %bad:-62 %bad%call_off:-34
%bad%car:-31 %bad%car_part:-45 %bad%leak:36 %bad%machine:28 %bad%meaning:36 %bad%money:29 %bad%noise:27
%bad%question:-18 %bad%shake:46 %bad%staff:-29 %bring:-74 %bring%busy:-21 %bring%call_off:48 %bring%car:34
%bring%car_part:124 %bring%elsewhere:-22 %bring%fails:33 %bring%leave_me:97 %bring%message:-24 %bring%money:-25
%bring%noise:27 %bring%on_way:19 %bring%place:71 %bring%question:114 %bring%refuse:30 %bring%shake:22
%bring%smoke_smell:34 %bring%start_again:32 %busy:-52 %busy%call_off:-47 %busy%fails:-27 %busy%noise:25
%busy%question:23 %busy%refuse:-44 %busy%shake:29 %busy%shift_it:25 %call_off%car:48 %call_off%car_part:22
%call_off%do_it:40 %call_off%elsewhere:-25 %call_off%fails:-72 %call_off%family:-19 %call_off%how_long:54
%call_off%leave_me:76 %call_off%meaning:21 %call_off%message:-41 %call_off%money:37 %call_off%odometer:-87
%call_off%phone:51 %call_off%place:48 %call_off%refuse:46 %call_off%shake:19 %call_off%shift_it:21
%call_off%smoke_smell:18 %call_off%staff:-29 %call_off%start_again:32 %call_off%who:-24 %call_off%wrong_one:-18
%car:87 %car%car_part:66 %car%elsewhere:-30 %car%fails:190 %car%gone_car:-90 %car%leave_me:48 %car%lift:-58
%car%noise:102 %car%pay_day:38 %car%place:19 %car%question:20 %car%shake:83 %car%shift_it:34 %car%smoke_smell:53
%car%start_again:36 %car%thanks:-18 %car%wrong_one:-69 %car_part:423 %car_part%do_it:-184 %car_part%doubt:65
%car_part%elsewhere:-23 %car_part%fails:99 %car_part%family:-61 %car_part%gone_car:-22 %car_part%how_long:72
%car_part%leak:86 %car_part%leave_me:154 %car_part%machine:36 %car_part%message:-20 %car_part%money:-65
%car_part%noise:-93 %car_part%odometer:54 %car_part%on_way:122 %car_part%opening:74 %car_part%phone:51
%car_part%place:98 %car_part%question:-56 %car_part%shake:159 %car_part%shift_it:-21 %car_part%smoke_smell:162
%car_part%staff:-64 %car_part%start_again:63 %car_part%thanks:-18 %do_it:-197 %do_it%doubt:25 %do_it%family:-22
%do_it%gone_car:-54 %do_it%leak:73 %do_it%leave_me:24 %do_it%on_way:35 %do_it%refuse:50 %do_it%season:-25
%do_it%smoke_smell:23 %do_it%start_again:24 %do_it%wrong_one:-56 %doubt:45 %doubt%elsewhere:39 %doubt%noise:38
%doubt%on_way:49 %doubt%shift_it:19 %doubt%wrong_one:24 %elsewhere:-65 %elsewhere%fails:60 %elsewhere%lift:-19
%elsewhere%phone:30 %elsewhere%place:46 %elsewhere%refuse:-40 %elsewhere%season:-20 %elsewhere%shift_it:-32
%elsewhere%smoke_smell:-19 %fails:438 %fails%family:-22 %fails%gone_car:72 %fails%how_long:36 %fails%leak:39
%fails%leave_me:-145 %fails%meaning:20 %fails%message:-18 %fails%money:-27 %fails%on_way:26 %fails%pay_day:18
%fails%phone:32 %fails%place:83 %fails%question:36 %fails%refuse:86 %fails%shake:-21 %fails%smoke_smell:-45
%fails%staff:32 %fails%who:-44 %fails%wrong_one:142 %family:-112 %family%gone_car:-30 %family%odometer:-78
%family%staff:50 %gone_car:-203 %gone_car%leave_me:26 %gone_car%shift_it:-31 %gone_car%start_again:37
%gone_car%wrong_one:-33 %how_long:-62 %how_long%noise:44 %how_long%on_way:-27 %how_long%opening:-18
%how_long%question:-43 %how_long%shake:19 %how_long%start_again:21 %how_long%who:-20 %leak:298 %leak%meaning:23
%leak%money:26 %leak%on_way:57 %leak%question:88 %leak%refuse:-76 %leak%start_again:20 %leak%thanks:-18
%leak%wrong_one:-30 %leave_me:-81 %leave_me%message:-63 %leave_me%noise:41 %leave_me%phone:35 %leave_me%place:38
%leave_me%question:49 %leave_me%refuse:23 %leave_me%season:-36 %leave_me%smoke_smell:-43 %leave_me%start_again:35
%leave_me%wrong_one:33 %lift:-66 %lift%on_way:19 %lift%place:38 %lift%refuse:-33 %machine:22 %machine%meaning:31
%machine%shake:34 %machine%wrong_one:30 %meaning%odometer:-20 %meaning%phone:33 %meaning%question:-40
%meaning%refuse:35 %meaning%shake:40 %meaning%staff:25 %message:-155 %message%place:-18 %message%question:-19
%message%start_again:-45 %money:-118 %money%noise:81 %money%question:-42 %money%refuse:22 %money%smoke_smell:50
%noise:527 %noise%odometer:59 %noise%on_way:72 %noise%pay_day:19 %noise%phone:44 %noise%place:55 %noise%question:251
%noise%refuse:102 %noise%shift_it:81 %noise%smoke_smell:-31 %noise%staff:32 %noise%start_again:94 %noise%wrong_one:98
%odometer:-67 %odometer%place:45 %odometer%question:-48 %odometer%refuse:-35 %odometer%shift_it:-18 %on_way:-34
%on_way%place:-20 %on_way%question:47 %on_way%refuse:-50 %on_way%shake:37 %on_way%smoke_smell:37 %on_way%staff:24
%on_way%start_again:32 %pay_day:-66 %pay_day%question:-26 %pay_day%season:-21 %phone:-43 %phone%place:25
%phone%question:-35 %phone%shift_it:-18 %phone%smoke_smell:33 %phone%start_again:33 %phone%who:-23 %place:57
%place%question:33 %place%refuse:32 %place%who:-27 %question:-113 %question%refuse:36 %question%shake:149
%question%shift_it:57 %question%smoke_smell:75 %question%start_again:-41 %question%who:-64 %refuse:-101
%refuse%shift_it:36 %refuse%start_again:53 %refuse%thanks:-26 %refuse%wrong_one:53 %season:-121 %season%shift_it:-23
%season%smoke_smell:-31 %shake:454 %shift_it%smoke_smell:18 %shift_it%wrong_one:20 %smoke_smell:517
%smoke_smell%who:-20 %staff:-52 %start_again:-30 %start_again%wrong_one:-18 %thanks:-103 %who:-129 %wrong_one:-148
@?:-174 @after_visit:33 @car:-103 @confirm_stop:-107 @later:-136 @nothing:47 @odometer:-33 @offers:-100 @reading:-140
@time:-43 @times:-137 @walk_in:-63 ^_$:-18 ^_a:-64 ^_airbag:46 ^_all:-28 ^_anda:65 ^_ando:-48 ^_ay:18 ^_baja:-85
^_battery:30 ^_both:27 ^_brakes:27 ^_cada:27 ^_can:-112 ^_cant:24 ^_car:156 ^_como:-30 ^_congratulations:-18
^_coolant:40 ^_could:-24 ^_cranks:39 ^_cual:-22 ^_cuando:-78 ^_cuanto:-38 ^_de:-43 ^_dice:29 ^_do:-45 ^_donde:-40
^_el:135 ^_en:-35 ^_estoy:-40 ^_feels:28 ^_fire:-30 ^_flat:-27 ^_found:54 ^_going:-36 ^_hace:45 ^_hay:38
^_headlights:23 ^_heard:31 ^_hit:-83 ^_how:-142 ^_hoy:39 ^_huele:41 ^_i:-105 ^_id:-39 ^_if:-42 ^_ill:-45 ^_im:-81
^_is:-197 ^_it:122 ^_just:-56 ^_key:37 ^_la:108 ^_las:84 ^_le:130 ^_let:-20 ^_lo:-24 ^_lost:70 ^_loud:18 ^_mande:-21
^_mas:-63 ^_meh:-30 ^_my:74 ^_never:-21 ^_new:-21 ^_no:-39 ^_not:-56 ^_on:-65 ^_one:39 ^_para:-24 ^_pedal:18
^_pink:26 ^_por:-34 ^_power:19 ^_puede:18 ^_que:-121 ^_quede:-58 ^_quedo:-36 ^_quit:-82 ^_rear:43 ^_running:31
^_se:22 ^_second:19 ^_shake:-39 ^_she:23 ^_si:30 ^_smells:21 ^_smoke:-31 ^_sounds:-71 ^_start:-132 ^_steering:38
^_still:-37 ^_stop:-86 ^_stuck:-47 ^_su:-21 ^_suena:-29 ^_takes:26 ^_temp:21 ^_tengo:24 ^_that:-29 ^_the:82
^_there:114 ^_they:-35 ^_this:-25 ^_thursday:21 ^_tiembla:52 ^_tiene:78 ^_tienen:-20 ^_tire:64 ^_todo:-60 ^_too:-21
^_took:19 ^_trae:121 ^_traffic:-21 ^_traigo:19 ^_va:-21 ^_vibra:27 ^_we:-32 ^_were:-21 ^_what:-127 ^_wheel:19
^_when:-82 ^_where:-18 ^_which:-68 ^_white:19 ^_whole:57 ^_why:-23 ^_will:-45 ^_wipers:-34 ^_wont:-24 ^_y:-54
^_ya:-88 ^_yeah:-36 ^_yes:56 ^_you:-111 ^_your:-32 a:116 a__and:79 a__book:-23 a__can:20 a__de:-27 a__fluid:-24
a__for:-21 a__in:79 a__is:19 a__noise:18 a__now:-37 a__on:36 a__out:-20 a__sound:28 a__tire:-31 a__under:-29
a__with:25 a_bit:27 a_como:-60 a_flat:19 a_hacer:-23 a_huevo:20 a_la:19 a_las:-57 a_mi:-45 a_plan:-54 a_pothole:27
a_quemado:20 a_ride:-18 abajo:111 abajo_$:82 able:-26 able_to:-26 about_the:-18 about_to:56 aceite:23 acelerador:32
adelante:-74 adelante_$:-85 adentro:22 after:31 after_a:28 after_i:43 again_$:-46 again__i:19 agarra:49 agradece:-45
agradece_$:-29 agua:140 agua_$:83 agua_por:32 aguanta:40 aguanta_$:36 ahead:-32 ahora:26 air:56 airbag:60
airbag_light:23 aire:41 al:81 al_cien:-26 al_frenar:44 al_rato:-19 alarm:-18 algo:73 alguien:21 all:28 all_$:-31
all__on:25 all__the:34 all__way:45 all_good:-42 all_of:18 all_over:36 all_the:51 alla:-19 almost:24 along:31
already:-45 already_$:-19 also:68 alto:21 alto_$:19 altos:32 altos_$:32 alumbran:49 amanecio:43 amber:23 an:-47
and:202 and__back:26 and__doesnt:-20 and__dont:32 and__is:29 and__it:28 and__no:35 and_i:29 and_it:64 and_now:72
and_the:89 and_then:22 anda:121 andan:20 ando:-84 ando_en:-19 anoche:26 anticongelante:38 anticongelante_$:37
anymore:29 anything:-23 apaga:36 apago:28 apenas:27 aqui:-45 aqui_$:-32 are:-65 are__again:-34 are__the:-20
are__to:51 are_about:52 are_in:-33 are_you:-25 arrancar:30 arrancar_$:21 arrastrando:27 arrastrando_$:25 as:-40
asi:-27 ask:-45 ask_me:-21 at__speed:24 at_all:-24 at_idle:32 at_my:-21 at_stop:31 at_work:-35 aunque:32 away:60
ay:18 ayer:50 azul_$:-24 back_$:-37 back_end:40 backing:19 bad:36 baja:-110 baja_$:-46 baje:24 baje_la:25 ball:50
barely:38 bateria_no:49 battery_was:22 be:-187 be__to:-27 be_able:-25 be_there:-47 bearing:-20 been:34 been_on:19
better:-20 better_$:-24 bien:-36 bien_$:-104 bien__que:22 bike:-41 bill:-34 bit:25 black:43 blanco:49 blew:31
blinker:64 book:-35 book_it:-18 both:39 box:20 box_$:25 brake:24 brake_$:35 brake__flush:-36 brake_fluid:-42
brake_job:-36 brakes_$:-81 brakes__like:29 brakes__stop:39 brakes_are:33 break:-47 brinca:38 bring:-33 broke:31
broken:43 bumper_$:24 bumps:44 bumps_$:37 burning:51 but:184 but__is:73 but_it:89 but_my:31 but_the:45 but_there:37
butter:-19 butter_$:-18 by_itself:32 by_the:35 cada:62 cada_dia:18 calento:25 calento_y:18 calienta:41 call_me:30
calle:-20 cambiaron:-34 cambiaron_la:-21 cambie:-21 cambio:-33 cambio_de:-23 cambios:93 came:51 came_on:90
came_up:-32 can:21 can__check:-30 can__drive:-23 can__me:41 can__move:-18 can__the:21 can_i:-72 can_we:-26
can_you:-22 cancel:-32 cancel_$:-18 cant__in:23 cant_get:39 cant_stop:25 car:53 car__the:-18 car_wont:21 carga:35
carretera:24 carretera_$:20 carro:56 carro__como:56 carro_no:19 carro_se:21 casa:-48 casi:67 casi_no:59 caso_$:-19
catches:43 catches_$:43 change:-29 charco:29 check_engine:36 check_the:-24 chispas:46 chunk:20 cien:-28 cien_$:-19
cita:-40 cita_$:-28 clunk:22 clunking:28 clutch:19 cochera:27 coffee:38 cofre:24 cold:45 cold_$:20 come:-28
come_$:-18 come_in:-30 coming_$:-29 como:113 como_de:27 compre:-20 con__frenos:-36 con_un:-22 congratulations:-18
contento:-31 coolant:43 cosas_$:18 could:-20 covered:-35 covered_$:-27 crack_of:-23 crank:30 cranks:46 crazy:35
crooked:33 cual:-28 cuando:43 cuando__vuelta:31 cuando_doy:31 cuando_me:-25 cuanto:-37 cuatro:-19 cuesta:41 da:79
da__el:18 dar:43 dash:37 dash_went:18 dawn:-21 day:-50 day_$:-19 days:24 days_$:29 de:-50 de_$:20 de__bateria:25
de__llanta:-38 de__llantas:-20 de__que:-23 de_abajo:47 de_aceite:-20 de_agua:52 de_baja:-24 de_la:-31 de_las:-32
de_llantas:-19 de_los:-34 de_que:-19 debajo:56 debajo_del:38 del:65 del__esta:27 del_aceite:31 del_cofre:20 desde:46
desde_que:22 desk:-24 dia:-25 dice:41 dice_que:39 did:-68 did_it:-20 died:67 died__the:33 died_on:22 digo:-20 dim:20
direccion:-78 direccion_$:-68 direccionales:72 do:-114 do_i:-50 do_it:-20 does__a:45 does_a:-27 doesnt:55
doesnt__anymore:20 dog:-18 doing:-28 done:-41 dont:30 dont_see:21 door:-133 door_$:-80 dos:26 dos_veces:23 down:107
down__street:31 down__the:48 down_on:53 doy:26 doy_vuelta:31 dream:-35 drive:79 drive_$:115 drive_it:-28 drives:-86
drives__as:-39 drives_like:-54 driveway:67 driveway_$:64 driving:34 driving_$:25 drop:-23 dropped:23 drops:44 dry:-25
duro:-20 e:18 e_brake:18 echa:27 echa_humo:21 el:133 el__a:-60 el__de:-31 el__no:78 el__pero:44 el__se:104 el__va:50
el__vibra:19 el__y:39 el_aceite:-42 el_acelerador:32 el_anticongelante:38 el_cambio:-21 el_carro:46 el_de:-44
el_escape:18 el_freno:80 el_jueves:-19 el_mismo:19 el_mofle:30 el_motor:29 el_pedal:41 el_ruido:-28 el_sabado:-18
el_trabajo:-45 el_viernes:-21 el_volante:70 empezo:29 empezo_a:29 en:65 en_$:-19 en__altos:32 en__carretera:24
en__casa:-34 en__cochera:22 en__mananas:28 en__subida:18 en_frio:22 en_las:86 en_los:48 en_que:-22 en_un:-18 end:55
enfrente:34 enfrente_$:23 engine:77 entran:79 entrar:51 entrar_a:21 equivocado:-20 era:-25 es:-72 es_$:-43 es_la:-22
es_que:57 escape:19 eso:-66 esta:56 esta__la:-26 esta_baja:-21 esta_bien:19 estaciono:42 estan:-43 estan_$:-36
estoy:-41 every:38 every__light:-81 every_morning:46 every_red:-82 every_time:21 ex:-26 exclamation:49
exclamation_mark:43 exhaust:34 fan:22 favor_$:-41 feels:107 feels_like:52 feo:23 fierro:30 fill:31 fine:-28
fine_$:-47 fine_but:21 finger:21 fire:-21 first:-45 first_$:-56 fix:29 fixed:-90 fixed_$:-26 flashing:27 flat:22
flat__the:40 flat_on:32 flat_out:-33 fluid:-55 fluid_$:-28 fluid_flush:-36 flush:-49 flush_$:-39 foco:-46 foquito:33
for:-126 for__appointment:19 for__brakes:-27 for__first:18 for_brakes:-18 for_the:-39 forever:23 forever_to:46
forgot:-18 forward:37 found:38 found_a:47 free:-27 freeway:19 freeway_$:26 frena:74 frenar:85 frenar_$:63 freno:123
freno_$:29 frenos:-47 frenos_$:-72 friday:-19 friday_$:-20 friday__it:21 friday_also:26 friday_at:-21 friend:46
frio:34 frio_$:34 from:66 from__back:23 from__the:45 from_the:38 from_under:43 front_desk:-21 front_tire:19 fue:-48
fue_la:-30 fuerza:53 fuga:61 garage:36 gauge:21 gear:79 gear_$:45 get:60 get__on:30 get_it:63 get_my:-19 go:86
go_$:38 go_ahead:-24 goes:49 going:69 going_to:-91 going_up:42 going_uphill:51 golpeteo:33 goma:36 gone:-43
gone_$:-20 good:-52 good_$:-34 got_a:35 got_it:-24 got_to:18 goteando:19 gracias:-29 gracias_$:-59 grease:-31
great:-61 great__the:-39 green:51 grinding:65 grinds:32 gusto:-23 guy:-44 hace:103 hace_ningun:-21 hace_un:56
hacen:-46 hacer:-23 haciendo:29 had:25 had__get:37 had_a:-19 had_to:68 haha:-32 haha_$:-22 hanging:34 happens__i:-19
happens_if:-19 hard:30 hard_to:25 has:-35 has__on:22 has_a:-25 has_been:25 hasta:18 hasta_el:18 hasta_que:-18 hay:28
hay_que:20 headlights:79 hear:44 heard:34 heard_a:31 help:20 help_$:-26 help__stuck:41 help_im:41 her:-18 here:-68
here_$:-44 hi:-23 highway:40 hill:58 hill_$:47 hills:85 hills_$:70 his:-46 his_bike:-38 hit:-39 hit__pothole:28
hit_a:29 hold:74 hold_the:19 home:20 hood_$:-33 hora:-36 hora_$:-35 hot:35 how:-170 how__are:-20 how__for:-24
how__is:-38 how__it:-18 how__to:25 how_low:-36 how_much:-53 hoy:86 hoy__manana:-28 hoy_mismo:23 hoy_no:26 huele:76
huele__huevo:20 huele_a:65 huevo:26 hum:19 humo:88 humo__al:25 humo_blanco:32 humo_negro:38 i:61 i__a:52 i__be:-54
i__down:21 i__it:-44 i__like:-25 i__my:18 i__on:28 i__see:58 i__smoking:-44 i__that:26 i__the:20 i__who:-25
i_brake:18 i_came:-19 i_can:60 i_dont:21 i_get:-54 i_have:39 i_hit:58 i_just:-20 i_know:-23 i_left:-28 i_moved:25
i_need:-56 i_park:58 i_quit:-45 i_skip:-19 i_slow:24 i_stop:35 i_think:101 i_was:-19 i_wont:-73 id:-41 id__to:-32
id_like:-34 idea:22 idle:92 idle_$:29 if:-36 if__skip:-19 if_it:-35 igual:21 ill:-90 ill__it:-31 ill__you:-22
ill_do:-18 ill_let:-23 im__my:-27 im__on:27 im__the:-20 im_down:-29 im_good:38 im_on:-28 im_stuck:40 in:19 in_$:-64
in__car:-28 in__garage:19 in__is:-22 in__middle:19 in__morning:-19 in__now:41 in__sidewall:22 in_a:46 in_it:-20
in_park:52 in_second:58 in_traffic:19 interested:-18 intersection:29 is:55 is__brake:-46 is__but:21 is__car:-21
is__hard:18 is__in:29 is__like:27 is__out:24 is__the:-60 is_at:-27 is_cold:20 is_fixed:-35 is_getting:21 is_going:31
is_gone:-44 is_in:-34 is_it:-148 is_leaking:29 is_making:35 is_on:26 is_own:29 is_perfect:-21 is_shaking:38
is_something:-19 is_stuck:23 is_the:-71 is_there:-28 is_this:-33 isnt:-21 it:142 it_$:-182 it__a:-22 it__cold:20
it__down:37 it__i:-22 it__in:-32 it__into:21 it__like:-18 it__over:21 it__own:29 it__the:-79 it__then:37 it__to:-36
it__when:52 it_a:-23 it_back:-35 it_died:25 it_does:60 it_doesnt:-24 it_friday:-23 it_in:-32 it_just:27 it_like:-28
it_makes:36 it_off:-23 it_on:-37 it_over:-20 it_pulls:20 it_starts:-30 it_still:49 it_takes:18 it_turns:31
it_when:-20 it_wont:66 itself:45 itself_$:21 jaja:-42 jaja_$:-29 jalonea:27 jerks:28 job:-55 juego:35 jueves_$:-26
jueves__las:-21 jueves_a:-21 jueves_pero:19 jump:24 just__on:39 just_died:36 k:-33 k_$:-27 keeps:73 key:41 kid:-38
kid__a:-28 kid_has:-37 knock:-30 know:-18 know_who:-24 la:52 la__de:35 la__del:30 la__hoy:-24 la__no:80 la__se:48
la__trae:19 la__y:-39 la_bateria:29 la_carretera:24 la_casa:-38 la_cita:-37 la_cochera:27 la_goma:36 la_hora:-34
la_llanta:71 la_palanca:33 la_pila:41 la_reversa:52 la_rueda:30 la_subida:18 la_suspension:20 la_troca:-24
la_velocidad:35 lado:59 lado_$:36 largo:24 largo_$:21 las:135 las_$:-36 las__ya:27 las_cosas:19 las_llantas:-32
las_luces:42 las_mananas:28 last:-52 last_night:36 last_year:-31 latch:40 late:-74 late_$:-71 lately:69 lately_$:63
lavadora:-27 le:118 le__a:-43 le__cuando:48 le__un:56 le_sale:91 le_van:-19 leak:-44 leak_is:-24 leaking:41 leaks:-18
leaks_no:-39 left:-80 left_$:-22 left__the:-23 left_a:-69 left_blinker:64 left_on:-28 left_rear:23 let__know:-23
let_go:66 let_me:-27 let_you:-21 light:48 light__on:64 light_came:54 light_is:50 lights:-59 lights_$:-79 like:123
like__in:49 like__is:24 like__on:33 like__plan:-54 like_a:34 like_crazy:36 like_to:-34 limpiaparabrisas:-49 line:25
line_$:26 liquido:-26 lit:19 little:30 llanta:128 llanta_$:-21 llanta_trae:19 llantas:-119 llantas_$:-68 llego:-54
llego_$:-38 lo:-88 lo__a:-32 lo__mi:-21 lo_vendi:-19 lol:-154 lol_$:-116 look_like:20 looks:54 looks_like:18
loose:-24 loose_$:-27 los:103 los__estan:27 los__no:25 los__rechinan:-40 los__se:25 los_altos:32 los_cambios:89
los_ninos:30 lost:53 lot:-27 loud:28 louder:-36 low:-21 low_$:-29 luces:27 lug:51 luz:-26 luz__la:-27 make:-66
make_it:-68 makes:68 makes_a:20 makes_the:32 making:47 making_a:33 mal:-21 manana_$:-35 mananas:27 mananas_$:30
mande:-23 many:-18 marcha:84 marcha_$:59 mark:43 martes:-18 martes__el:-30 martes__le:32 martes_pero:28 mas:-49
mas_adelante:-63 me:-46 me_$:54 me__el:-74 me__en:35 me__la:-38 me__los:22 me__para:31 me__que:41 me__tirado:24
me_da:-22 me_dejaron:-38 me_dejo:20 me_in:-18 me_poncho:18 me_quede:75 me_sale:20 me_tuvieron:39 me_up:-21 me_va:50
mean_on:-26 mechanic:34 meh:-30 mejor:-72 menos:-21 metal:86 metal_$:47 metal__metal:25 mi:-104 mi_carro:27
middle__the:21 mil:-46 miles:-25 millas:-20 min:-114 min_$:-78 min_late:-22 mine:18 mis:-31 mismo:33 miss:-31
miss_it:-24 mofle:30 monday_$:-24 monday__it:20 monday_but:19 money:-31 more:-23 morning:51 morning_$:70 mornings:29
motor_$:18 move:-19 mph:25 much:-79 much__a:-25 much_for:-23 much_is:-28 mucho:34 mucho_$:18 mucho_para:26 muy:-77
my:-81 my__car:-21 my__has:-50 my__in:-25 my__is:28 my__keeps:31 my__look:20 my__wont:33 my_brakes:68 my_car:-22
my_driveway:44 my_kid:-39 my_mechanic:53 my_number:-23 my_oil:30 my_seat:-20 my_tire:35 my_tires:53 my_way:-50
myself:-24 nada:-38 nearly:32 need:-83 need__ride:-18 need_a:-24 need_to:-47 needing:18 needle:42 negro:47 neutral:20
neutral_$:20 new:-85 new_$:-43 new_battery:-36 next:-79 next_door:-18 next_week:-47 ni:-35 ni__no:18 ni_nada:-23
night:27 night_$:24 ningun:-80 ningun_ruido:-27 ninguna:-49 ninos:29 ninos_$:46 no:44 no_$:-128 no__all:-29
no__at:-42 no__bien:35 no__como:18 no__da:20 no__dar:29 no__en:34 no__it:20 no__la:29 no__los:43 no__nada:-40
no__ni:-32 no__ningun:-69 no__ninguna:-47 no__no:-84 no__on:-19 no__y:23 no_agarra:45 no_and:-18 no_arranca:34
no_frena:67 no_hace:-27 no_hay:-30 no_it:24 no_leaks:-42 no_me:32 no_noise:-74 no_para:31 no_prende:52 no_quede:-19
no_quiere:81 no_quiso:50 no_rechina:-24 no_smoke:-32 no_thanks:29 no_tiene:-59 no_trae:-63 no_voy:19 no_you:-35
nobody:-22 noise_$:46 noise__all:-49 noise__fixed:-21 noise_at:-45 noise_that:20 noises:-23 noisy:-29 nomas_el:-28
normal:41 not:-90 not__now:-21 not__week:31 not_going:-26 not_right:-34 not_this:30 nothing:33 now:-22 now_$:-97
now_it:50 nuevas:-48 nuevas_$:-26 number:-40 number_$:-25 o:-65 of:53 of__all:38 of_a:37 of_my:31 of_the:25 oil:-41
oil_change:-22 oil_pressure:31 ok__the:19 ok_friday:26 old:-42 on:177 on_$:20 on__back:18 on__freeway:33
on__highway:25 on__hill:45 on__i:30 on__is:26 on__side:19 on__th:-34 on__way:-31 on_a:33 on_after:29 on_hills:51
on_me:65 on_my:-72 on_the:29 on_your:-24 once:-26 one:27 one_$:-51 one__my:26 one_is:-22 one_of:28 one_side:20
one_that:20 open:47 or:-102 or_anything:-26 otra:18 otra_vez:35 otro:-34 out:41 out_$:28 out__door:-25 out__me:38
out_front:-22 out_no:-30 out_on:37 over:128 over_$:23 over__and:18 over__the:23 over_bumps:37 over_the:25
overheating:28 own_$:21 oye:98 oye_un:35 pads:-47 pads_are:-19 palanca:33 para:-20 para__en:30 para__lado:35
para_el:-25 para_la:23 para_un:36 park:112 park_$:82 paro:27 pasa:-18 pasar:61 paso:33 pass:-25 pass_$:-20 past:52
past_$:27 pedal:125 pegado:30 perfect:-26 perfect_$:-23 pero:96 pero__un:20 pero_le:35 phone:-44 phone_$:-21 pick:-18
pierde:77 pila:41 ping:23 pink:27 place:-21 plan:-64 plan_$:-54 plastic:28 please_$:-28 point:22 pole:25 por_que:-31
porq:28 porque:37 porque_se:21 pothole:28 power:91 power_steering:20 precio:-31 prende:99 prende_$:28 prender:44
prendida:-43 prendido:-33 prendido_$:-23 prendio:42 presion:31 pressure:35 price:-49 price_$:-19 puddle:39
puede_$:-20 puede_ser:22 puedo:51 pull:-47 pulled:-44 pulled_a:-27 pulls:47 pump:57 put:-26 que:102 que__al:18
que__la:18 que__le:-19 que_baje:29 que_es:-29 que_la:28 que_le:-36 que_me:-18 que_se:26 que_tanto:-18 queda:18
queda_pegado:30 quede_muy:-49 quedo:-116 quedo_$:-25 quemado:31 quien:-23 quiere:87 quiero:-25 quiso:50 quit:-89
quit_$:-43 quit_on:42 quit_smoking:-49 quita:35 quita_$:35 radiador:25 radiador_$:18 raining:21 raro:49 rato:-25
reads:18 real:25 really:19 rear:47 rechinando:18 red:-58 red_light:-77 reminders:-25 reminders_$:-21 replaced:-53
replaced_the:-37 report:-24 reversa:67 reversa_$:59 reverse:56 ride:-25 right:-119 right_$:-57 right_now:-90 rock:21
roja:22 rojo:33 rough:49 rueda:26 ruido:58 ruido_$:35 ruidos:-73 ruidos_ni:-33 running_late:-21 sabado:-22 saca:18
said:-42 sale:110 sale_$:-42 sale__blanco:31 sale__velocidad:31 sale_humo:45 sale_un:31 sale_vapor:18 say:-19 says:45
says_the:41 se:323 se__con:-29 se__cuando:21 se__en:19 se__la:-29 se__llevo:-26 se__pegado:30 se__poncho:18
se__que:42 se__sale:31 se__sin:19 se__solo:20 se__un:46 se__va:61 se__y:43 se_agradece:-33 se_apaga:28 se_calento:23
se_calienta:34 se_equivocado:-18 se_esta:20 se_fue:-25 se_jalonea:25 se_la:-18 se_le:50 se_lo:-106 se_me:131
se_oye:90 se_prendio:19 se_puede:-38 se_queda:24 se_quita:35 se_siente:26 se_va:33 seat:41 second:53 second_$:-19
second_gear:65 see:69 segunda:18 segunda_$:21 sending:-25 set:-26 shake:-71 shake__it:-39 shake_on:-39 shakes:60
shaking:20 she:41 shifts:63 shimmies:56 shop:-45 shoulder:83 shoulder_$:44 showed:29 shut:67 shut_$:33 shuts:26
shuts_off:26 si:25 si__martes:31 si_el:32 si_pero:35 side:27 sidewall:23 siente:26 siente_que:21 sign:-24 sign_me:-18
sigue:66 sin:48 sin_aire:21 since_i:31 since_the:-37 skip:-26 sky:23 slow:24 smell:39 smells:36 smells_like:46
smoke:-33 smoke_break:-31 smoking:-79 smoking_deal:-19 so:-52 so__is:-20 so_no:-19 sola:22 sold:-23 solo:38 solo_$:22
some:-23 somebody__me:21 something:34 something__up:-34 something_came:-34 sooner:18 sorry:-51 sound:44 sounds:-77
sounds__a:-68 sounds_good:-31 sounds_like:-33 soy:-24 sparks:39 speed:58 speed_$:31 squeaking:-39 squeaks:-45
start:-52 start_$:-61 started:31 starts:-60 stay:36 steam:21 steering:93 steering_got:21 step:41 stick:28 still:29
still_on:-48 stop:83 stop_in:19 street:25 street_$:21 stuck__traffic:-31 stuff:30 stuff_$:24 su:-75 sube:31 subida:18
suena_bien:-49 suspension:20 symbol:27 tailpipe:33 take:-28 takes:66 takes__to:65 takes_forever:44 talk:-22
taller:-28 tambien:44 tanto_que:20 temp:49 tengo:31 termometro:27 texting:-28 texts:-35 th:-56 th_$:-31 than:-28
thank_you:-21 thanks_$:-33 thanks_it:24 that_$:-26 that__a:-20 that_it:22 that_the:-21 the:77 the__and:-34
the__at:-22 the__be:-34 the__box:22 the__brake:21 the__by:-18 the__doesnt:50 the__down:39 the__end:38 the__from:-24
the__front:44 the__has:-24 the__if:24 the__is:34 the__it:25 the__job:-29 the__light:31 the__line:35 the__need:-25
the__next:-19 the__now:-20 the__since:30 the__that:28 the__to:33 the__was:-40 the__went:86 the__were:-27 the_back:87
the_battery:-24 the_belt:-34 the_brakes:-34 the_car:-31 the_door:-77 the_drive:22 the_e:18 the_freeway:35
the_garage:24 the_highway:22 the_hill:33 the_leak:-24 the_mechanic:-19 the_middle:18 the_morning:-24 the_new:18
the_noise:30 the_oil:-31 the_old:-25 the_pads:-18 the_pedal:40 the_phone:-18 the_right:31 the_seat:36 the_second:-32
the_shop:-29 the_shoulder:80 the_sidewall:23 the_sky:23 the_smoke:-20 the_steering:32 the_stop:28 the_temp:26
the_texts:-23 the_th:-55 the_time:19 the_tires:-89 the_truck:60 the_visit:-35 the_way:68 the_wheel:46 the_wiper:-27
them:-28 then_$:-28 then_it:29 there:53 there_$:-55 there__a:127 there_a:-19 there_is:147 there_was:32 these:-22
they:-59 they__the:-38 they_replaced:-29 things:-35 think:69 think_$:81 think__it:-19 this_$:-34 this__is:-26
this__it:30 this_is:-18 this_morning:72 this_one:-28 this_week:59 those:-58 though:40 though_$:38 three:55 through:47
through_$:20 thursday:-21 thursday_$:-44 tiembla:61 tiene_una:33 tienen:-39 tight:19 till:-23 time__hit:23 time_i:21
tira:41 tirado:20 tirando:24 tire:98 tire_$:36 tire_is:31 tire_on:-29 tires:-124 tires_$:-62 tires_be:-29 to:24
to__a:35 to__at:18 to__it:28 to__my:-33 to__off:23 to__the:26 to__to:-30 to_be:-22 to_bring:-20 to_call:-25
to_cancel:-18 to_drive:-31 to_fix:33 to_get:80 to_let:45 to_make:-24 to_me:-21 to_start:52 to_stop:37 toda:27
toda_la:19 todavia:-18 today:68 today_$:56 todo:-40 todo__con:-34 todo_bien:-52 todo_el:46 tomorrow:40 tomorrow_$:25
too_much:-18 took__to:37 tosiendo:27 totaled:-26 toward:40 toward_the:40 trabajo:-48 trabajo_$:-22 trabajo_no:-24
trae:107 trae__la:43 trae__luz:-40 trae_la:23 trae_un:57 trae_una:36 traffic_$:24 traffic_is:-25 trail:41 trail_of:41
troca:-26 truck:37 truena:41 tues:26 turn:58 turns:114 tuvieron:39 twice:69 twice_today:33 two:35 un:169 un__al:22
un__de:23 un__que:22 un_golpeteo:27 un_lado:50 un_ruido:53 un_zumbido:25 una:123 una_llanta:47 una_luz:28 under:88
under__dash:19 under__hood:-24 under_me:47 under_the:53 up:56 up_$:30 up_at:-20 uphill:52 us:-25 ustedes:-24 va:123
va_para:35 vacation:-18 van__hacer:-18 van_a:-20 vapor:38 veces:35 velocidad:66 velocidad_$:66 venden:-39 vendi:-28
vendimos:-24 verde:31 vez:26 vi:34 vibra:48 vibrates:49 viene:29 viernes:-28 visit:-37 visit_$:-36 volante:70
volante_$:19 voy_a:-23 vuelta:30 vuelta_$:47 want:-18 warning:-74 was:-77 was__again:26 was__on:-23 was_a:40
was_fixed:-28 was_in:-18 water:25 way:31 way_down:39 way_home:18 we:-78 we__it:-19 we_move:-18 week_$:-38 weird:18
went:119 went__on:44 went_away:72 went_out:49 were:-60 were__on:-30 what:-107 what__a:-25 what__if:-19 what__that:18
what__the:-39 what__you:21 what_do:23 what_does:-31 what_happens:-21 what_is:-65 wheel:83 wheel_bearing:-19
wheel_is:19 wheels:-30 when:120 when__i:-26 when__is:24 when__stop:42 when_i:148 when_it:34 when_the:-27 where:32
where_i:45 which:-79 whine:26 who:-46 whoever:-26 whole:77 whole_car:49 why:-24 will:-75 will_the:-36 window:-21
wiper:-45 wipers:-80 wires:48 with:-78 with_speed:26 with_the:-58 wobbles:59 wont:48 wont__able:-25 wont__in:30
wont__it:-69 wont__over:21 wont__there:-33 wont_be:-104 wont_go:35 wont_make:-47 wont_start:52 work:-59 works:60
works_but:46 worse:32 would:-30 would_i:-19 wrong:-22 y:151 y_$:-27 y__bien:-23 y__no:22 y__se:21 y_casi:27 y_las:55
y_lo:21 y_me:-21 y_nada:23 y_no:33 y_se:26 y_ya:40 ya:-55 ya__cambiaron:-19 ya__rechina:-22 ya_casi:23 ya_le:-46
ya_ni:34 ya_quedo:-31 ya_van:19 yeah:-49 year:-25 year_$:-34 yes_$:-38 yes__works:52 yes_it:19 yes_monday:29 you:-232
you_$:-32 you__a:-69 you__my:-36 you__the:-48 you_can:18 you_check:-30 you_left:-79 you_said:-24 your:-109 zumbido:32
"""
