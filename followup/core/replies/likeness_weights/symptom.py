"""What speaks for and against `symptom`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "symptom"
BIAS = -115
WEIGHTS = """\
#abad:-23 #abaj:72 #abel:49 #abla:-28 #abou:24 #abri:-40 #abro:102 #acab:-19 #acat:-28 #acce:21 #aced:-61 #acei:44
#acel:67 #acen:-56 #acer:-21 #ache:23 #acho:35 #acia:24 #acie:38 #acin:24 #acio:30 #acki:18 #adas:-28 #adea:30
#adec:-63 #adel:-95 #aden:33 #adia:35 #adli:88 #ados:-23 #adre:-19 #afte:29 #agar:74 #agra:-85 #agua:190 #ahea:-35
#ailp:39 #aini:24 #airb:55 #aire:32 #akes:193 #akin:76 #alan:37 #alar:-44 #alen:78 #ales:61 #algo:71 #alie:29
#alle:-19 #alli:39 #allo:54 #ally:24 #almo:26 #alon:66 #alre:-43 #also:67 #alte:21 #alto:42 #aman:39 #amat:48
#ambe:32 #amin:21 #amos:-59 #anca:60 #ance:-48 #anco:68 #anda:99 #ande:-80 #ando:157 #anec:38 #ange:-49 #angi:46
#anic:41 #anks:58 #ansm:-21 #anta:28 #anti:42 #anto:-33 #anym:19 #anyt:-40 #apag:97 #apar:-68 #apen:42 #apor:33
#aqui:-55 #arab:-45 #arag:41 #arca:-21 #arch:84 #arco:21 #arel:33 #arga:39 #argo:20 #aril:18 #arks:45 #arly:35
#arni:-97 #aron:-96 #aros:43 #arpa:30 #arra:144 #arts:-68 #asad:-28 #asar:79 #asca:49 #ashb:36 #ashi:27 #asti:26
#astr:28 #atal:23 #atbe:53 #atch:66 #ated:-19 #atel:87 #ates:71 #atin:59 #atro:-27 #atte:30 #atul:-21 #aunq:49
#aust:38 #avad:-33 #aven:-28 #avia:-18 #away:71 #ayed:21 #ayer:50 #bach:23 #bado:-34 #baja:-67 #baje:25 #bajo:136
#ball:79 #bank:-18 #bare:33 #bbin:21 #bble:59 #been:40 #befo:22 #belt:38 #bett:-36 #biar:-46 #bica:-40 #bida:52
#bido:27 #biem:-60 #bike:-53 #bill:-36 #bing:33 #bios:120 #blac:41 #blam:-18 #blan:38 #bler:18 #bles:47 #blew:27
#blin:112 #blow:42 #boar:34 #bomb:38 #book:-45 #boom:36 #borr:45 #bota:23 #both:50 #boug:-18 #bout:18 #brak:88
#bran:35 #brat:77 #brea:-53 #brin:24 #bris:-45 #brok:91 #buen:-26 #bump:58 #burn:46 #buzz:34 #cabe:43 #cada:65
#cado:-27 #cale:77 #cali:35 #call:-55 #camb:-57 #came:31 #cami:21 #camp:18 #canc:-36 #cand:18 #carg:45 #carr:55
#casa:-65 #casc:49 #casi:53 #catc:66 #cati:-35 #ccel:23 #ceit:44 #cele:94 #chad:22 #chan:-32 #char:39 #chec:25
#ched:-29 #chem:-22 #cher:30 #ches:44 #chis:71 #chor:27 #cias:-30 #cida:64 #cien:25 #cier:-18 #ciga:-20 #cing:31
#cion:29 #cita:-43 #ckin:54 #clam:53 #clic:26 #clun:53 #clut:18 #cobr:-18 #coch:30 #coff:50 #cofr:20 #cold:45
#colo:23 #come:-57 #como:119 #comp:-72 #cond:66 #conf:-37 #cong:22 #cont:-60 #cool:39 #corr:18 #coug:18 #coul:-20
#cove:-43 #cran:93 #crat:-45 #craz:38 #crib:-22 #croo:21 #ctio:19 #ctri:28 #cual:-49 #cues:35 #curv:23 #dame:-21
#dang:-19 #dash:54 #ddle:53 #dead:25 #deal:-37 #deba:47 #dece:-63 #deja:28 #dela:-96 #deme:-33 #dere:19 #ders:28
#desd:49 #desk:-21 #dewa:27 #diad:21 #diat:23 #dice:50 #dida:-48 #dido:-48 #died:71 #dier:-56 #digo:-20 #dimo:-32
#ding:52 #dirt:-28 #disa:19 #divo:-18 #dlig:94 #does:70 #done:-46 #dont:42 #door:-150 #dora:-28 #doub:18 #down:104
#drea:-48 #driv:58 #drop:59 #dulc:20 #duri:27 #duro:-30 #eadl:106 #eads:38 #eady:-53 #eaks:-81 #eall:24 #eams:38
#eand:61 #eard:40 #earl:51 #ears:21 #ease:-22 #eati:33 #eave:-18 #ebaj:47 #ecal:43 #echa:45 #econ:64 #ecor:-19
#ecto:-18 #ectr:28 #edal:126 #edes:-24 #edin:26 #edle:46 #eedi:26 #eedl:46 #eels:64 #eeps:75 #eeri:105 #efor:22
#egad:79 #egla:-28 #egro:43 #eird:18 #eite:44 #eith:-19 #ejar:48 #ejor:-91 #elan:-54 #elea:49 #elec:25 #eler:85
#ells:33 #eloc:66 #elta:32 #emad:39 #embl:54 #emin:-33 #emos:-61 #empe:29 #empo:-24 #empt:48 #enar:86 #enas:43
#ence:44 #enda:-22 #ende:106 #endi:-168 #endo:52 #enen:-42 #enev:-23 #enfr:50 #engi:93 #engo:36 #enme:-22 #enos:-64
#ensa:-24 #ensi:18 #enta:69 #ente:95 #entr:105 #epla:-51 #epor:-29 #equi:-29 #erat:35 #erde:122 #erdi:-31 #erec:25
#ered:-49 #eres:-33 #erfe:-46 #erhe:48 #erin:116 #erks:25 #ermo:28 #erna:26 #ersa:63 #erse:75 #ervi:63 #erza:63
#esca:20 #esco:-18 #escu:68 #esde:49 #esio:48 #esnt:68 #espe:-43 #espo:29 #essa:-22 #essu:45 #esta:38 #este:-22
#esto:-69 #etal:118 #eter:29 #ethi:20 #etim:25 #etra:46 #etro:36 #ette:-41 #eutr:18 #evas:-50 #ever:105 #eves:-19
#ewal:26 #eway:94 #excl:57 #exha:38 #expl:-18 #exti:-21 #exts:-40 #eyes:18 #falt:-20 #faro:29 #fast:25 #fect:-48
#feel:92 #fell:-32 #ffee:50 #ffic:-24 #fill:45 #fine:-23 #fing:26 #fire:-21 #firm:-18 #firs:-46 #fixe:-91 #flas:20
#flui:-54 #flus:-43 #foco:-57 #foll:20 #foqu:36 #fore:42 #foun:43 #fren:283 #frid:-20 #frie:52 #frio:34 #from:61
#fter:61 #fuer:56 #fuga:45 #fuse:47 #gado:94 #game:-22 #gana:-39 #gara:42 #garo:70 #garr:55 #gate:42 #gear:117
#gela:43 #ghwa:32 #gine:91 #ging:49 #gnal:28 #goes:53 #goin:67 #golp:68 #goma:35 #gone:-54 #good:-39 #gote:30
#grab:30 #grad:-96 #grat:-24 #grea:-98 #gree:49 #grin:121 #gual:18 #guan:48 #guna:-58 #gund:23 #gunt:-21 #gust:-24
#habl:-34 #hace:48 #haci:40 #hada:23 #haha:-34 #haki:24 #hand:40 #hani:44 #hank:-36 #happ:-23 #hard:35 #hast:19
#haus:38 #hboa:36 #head:62 #hear:79 #heat:52 #heck:22 #heel:48 #help:23 #hene:-23 #hera:30 #hese:-26 #hich:-79
#hift:132 #high:49 #hile:18 #hill:214 #himm:77 #hine:43 #hing:46 #hink:70 #hisp:57 #hoev:-29 #hold:111 #hole:109
#home:23 #hone:-44 #hops:23 #hora:-42 #horr:19 #hors:18 #hose:-56 #houg:45 #houl:77 #hour:-31 #hous:-24 #howe:34
#hree:71 #hrou:43 #huec:21 #huel:87 #huev:26 #humb:-21 #humo:68 #hump:29 #hunk:58 #huts:25 #hway:32 #iapa:-62
#iaro:-37 #ible:18 #ibra:123 #icen:-20 #icks:41 #icon:56 #idad:51 #iday:-24 #iddl:19 #idea:22 #iden:-19 #ides:35
#idew:27 #idge:-27 #idle:99 #idos:-87 #iemb:43 #iemp:-22 #iend:113 #iene:36 #ient:104 #ierd:111 #iere:82 #iern:-20
#iero:-30 #ifte:26 #ifts:82 #igar:-20 #ight:-44 #ighw:32 #igna:28 #igua:22 #igue:50 #ilen:37 #iles:-20 #illa:-25
#illo:25 #ills:90 #ilpi:39 #imes:42 #immi:71 #imos:-37 #impi:-91 #inca:41 #ince:-37 #indi:60 #indo:-41 #inds:46
#info:-26 #inge:22 #ingu:-149 #inin:37 #inke:84 #inks:23 #inos:40 #ints:53 #iona:77 #ione:-19 #ions:-25 #iper:-146
#ippi:40 #iqui:-22 #irad:77 #irba:55 #ires:-65 #irri:30 #irst:-46 #isan:-21 #isap:20 #isas:-45 #isim:20 #isit:-55
#isnt:-19 #ispa:54 #ista:28 #iter:18 #ithe:-19 #itse:51 #itti:19 #ittl:28 #iver:-41 #ives:-98 #ivew:71 #ivin:33
#ivoc:-23 #ivor:-18 #ixed:-91 #jaja:-58 #jala:20 #jalo:37 #jaro:64 #jerk:28 #join:63 #jueg:42 #juev:-19 #jump:61
#junt:-22 #keep:76 #kers:18 #king:60 #lace:-74 #lack:41 #lado:56 #lain:-20 #lama:38 #lamo:-18 #lamp:30 #lanc:80
#lank:21 #lant:64 #larm:-38 #laro:-20 #latc:51 #lati:-21 #lava:-34 #lder:108 #leak:-22 #lean:53 #lect:25 #left:-98
#lega:-18 #lego:-66 #lenc:37 #lend:-18 #lent:83 #lera:67 #lero:51 #lice:-19 #lick:118 #lide:38 #lies:23 #ligh:29
#like:96 #limp:-30 #lind:45 #ling:29 #link:95 #liqu:-24 #litt:28 #llas:-48 #lleg:-92 #ller:-31 #llow:74 #lmos:27
#loci:66 #lone:34 #look:56 #lora:26 #lose:30 #lost:68 #lowi:30 #lows:74 #lpip:39 #lrea:-43 #ltim:-22 #ltos:45
#luce:56 #luid:-54 #lumb:62 #lunk:53 #lush:-43 #lutc:18 #lyin:38 #mach:-23 #maki:45 #mand:-100 #mane:36 #marc:64
#mark:59 #mart:-25 #mati:48 #mber:-25 #mbia:-63 #mbid:26 #mbie:-23 #mbio:82 #mbla:48 #mbol:31 #mech:44 #mejo:-95
#mell:54 #mens:-20 #ment:-30 #mero:-26 #meta:118 #mete:83 #meth:20 #meti:22 #metr:28 #midd:19 #mies:69 #mile:-20
#mill:-30 #mind:-36 #ming:-27 #mism:26 #miss:-54 #mmie:69 #mofl:25 #moke:-47 #moki:-87 #mome:20 #mone:-37 #mont:-28
#morn:100 #morr:39 #most:35 #mper:20 #mpia:-97 #much:-90 #myse:-18 #nada:-51 #nail:26 #nale:80 #nana:18 #nand:53
#nato:22 #ncar:19 #ncel:-35 #ncha:33 #ncho:18 #ncie:18 #ndan:24 #ndar:-29 #ndem:-31 #nden:-31 #nder:158 #ndid:-97
#ndim:-27 #ndin:35 #ndio:25 #ndow:-35 #near:20 #nece:-29 #neci:38 #need:-47 #negr:49 #neut:18 #next:-88 #nfor:-23
#nfre:42 #ngel:43 #nger:24 #nges:93 #ngin:139 #ngra:-21 #ngun:-154 #nigh:38 #ning:-62 #nino:33 #nker:82 #nner:-23
#nobo:-19 #nois:-55 #norm:33 #nose:19 #noth:20 #nque:65 #nsaj:-20 #nsio:21 #nsmi:-21 #nsto:-19 #ntan:40 #ntas:-128
#nten:-58 #ntic:43 #ntra:106 #ntre:-22 #ntro:20 #ntur:100 #nuev:-96 #numb:-37 #nume:-18 #nymo:19 #nyth:-34 #oard:34
#oast:46 #obbl:69 #obod:-19 #obra:-24 #obre:38 #ocad:-23 #oche:25 #ocid:65 #ocki:19 #ocks:49 #ocup:-24 #oday:82
#oesn:68 #oeve:-29 #offe:50 #ofle:25 #ofre:20 #oiga:23 #oing:50 #oint:93 #oise:-27 #oisy:-28 #oked:23 #oken:56
#okin:-73 #olan:113 #ollo:20 #olor:33 #olpe:68 #omet:69 #omin:-21 #omor:39 #ompa:-19 #ompr:-19 #onal:80 #onan:32
#once:-43 #onch:37 #onde:21 #onea:30 #oney:-34 #onge:38 #ongr:-21 #onte:-51 #onth:-18 #ooks:53 #oola:40 #open:48
#ople:19 #oppe:81 #oqui:43 #orad:-22 #ores:-36 #orev:21 #orks:75 #orma:40 #orme:-24 #orni:102 #orqu:40 #orra:43
#orri:42 #orro:54 #orry:-51 #orse:44 #orth:-19 #oses:43 #osie:29 #oste:28 #osti:42 #otal:-34 #otan:24 #otea:29
#othi:37 #otho:26 #otra:19 #otro:-42 #oubl:18 #oude:-55 #ough:143 #ould:33 #ound:21 #ours:-19 #ousa:-19 #over:115
#owar:46 #owed:26 #ower:92 #owin:40 #pade:30 #pads:-45 #paga:59 #pago:18 #pala:29 #para:-44 #pare:20 #park:168
#parp:30 #part:-35 #pasa:57 #paso:32 #past:39 #peda:125 #peed:74 #pega:61 #pena:37 #perd:-47 #perf:-46 #pero:138
#pers:-117 #pete:37 #phil:63 #phon:-52 #piap:-62 #pick:-18 #pier:91 #pila:53 #ping:99 #pink:28 #pipe:39 #plac:-72
#plai:-20 #plan:-94 #plas:32 #poin:30 #pole:37 #ponc:38 #pond:19 #pone:-20 #popp:40 #porq:40 #port:-39 #poth:26
#powe:103 #pped:76 #ppin:56 #prec:-43 #preg:-21 #pren:115 #pres:107 #pret:20 #pric:-62 #pudd:36 #pull:-58 #pump:59
#quea:-70 #qued:-109 #quem:32 #quid:-23 #quie:32 #quis:71 #quit:-24 #quiv:-25 #raba:-40 #rabr:-45 #raci:19 #ract:40
#rada:49 #rade:-94 #radi:20 #rage:40 #rail:53 #rain:72 #rake:78 #ramp:34 #ranc:50 #rank:93 #raro:29 #rast:26
#ratc:-45 #rate:57 #rati:33 #rato:-30 #raye:27 #razy:38 #rbag:52 #rcha:98 #reak:-54 #real:51 #ream:-54 #rear:49
#reas:-21 #reat:-73 #reca:73 #rech:25 #reci:-53 #reco:-31 #reen:50 #reet:34 #rega:47 #regl:-37 #rely:33 #remi:-73
#rena:166 #rend:111 #reno:68 #rent:21 #repl:-53 #repo:-41 #rese:-20 #resi:48 #ress:69 #rest:-32 #rete:19 #retr:46
#reve:146 #rfec:-46 #rhea:48 #rice:-63 #rida:-23 #ride:-36 #ridg:-27 #rido:27 #rien:109 #righ:-111 #rill:29 #rinc:51
#rind:121 #ring:92 #ripp:19 #risa:-45 #risi:26 #rite:-23 #rivi:39 #rmal:33 #rmin:-19 #rmom:30 #rnes:-19 #rnin:57
#road:-27 #roba:-19 #roca:-31 #rock:66 #roja:21 #rojo:30 #roke:91 #roll:18 #rong:-24 #rook:21 #ropp:29 #rops:55
#rose:-19 #rota:-21 #roug:106 #rpad:30 #rque:26 #rran:52 #rras:26 #rreg:-37 #rret:22 #rrie:45 #rrin:20 #rsda:-24
#rted:23 #rter:28 #rtes:-32 #rtie:-23 #ruck:52 #rued:33 #ruen:48 #rumb:19 #runn:27 #runs:-21 #rush:19 #rust:26
#rwar:57 #saba:-24 #sada:-27 #sado:-18 #said:-42 #saje:-18 #sale:112 #same:-19 #sand:-21 #sapp:20 #says:47 #scab:49
#scra:-45 #scri:-23 #sday:-29 #seas:-23 #seat:92 #seco:74 #seda:-18 #segu:19 #self:29 #send:-37 #seno:22 #seri:18
#serv:73 #shbo:36 #shie:22 #shif:132 #shim:77 #shin:42 #shop:-42 #shou:75 #show:30 #shut:100 #side:59 #sien:64
#sign:46 #sigu:54 #sile:37 #sing:29 #sion:41 #skip:-27 #slic:73 #slid:63 #slip:38 #slow:30 #smel:54 #smis:-21
#smok:-133 #sobr:48 #soft:23 #sola:24 #sold:-31 #soli:22 #solo:32 #some:19 #sorr:-52 #soun:-27 #spar:52 #spas:53
#spee:74 #sper:-28 #spon:23 #sque:-86 #squi:24 #ssur:45 #stac:49 #stal:56 #stan:-60 #star:-49 #stas:20 #stay:55
#stea:30 #stee:102 #step:58 #ster:27 #stic:69 #stil:25 #stom:-28 #stop:49 #stoy:-52 #stre:42 #stuf:42 #sube:38
#subi:52 #supe:20 #sure:23 #susp:20 #symb:29 #taci:49 #tail:115 #take:31 #tale:-24 #talk:-41 #tall:74 #tamb:52
#tand:54 #taro:-18 #tart:-37 #team:25 #tede:-24 #teer:105 #tele:-18 #tely:94 #temp:94 #teng:22 #tent:-47 #tere:-19
#tern:25 #ters:50 #test:29 #text:-95 #than:-75 #them:-22 #ther:33 #thes:-26 #they:-60 #thin:36 #thol:26 #thos:-65
#thou:22 #thre:66 #thro:45 #tick:25 #tico:36 #tiem:29 #tier:-22 #tigh:26 #tima:-35 #time:26 #ting:64 #tion:22
#tira:128 #tire:-21 #toda:93 #todo:-52 #toma:-32 #tomo:37 #tope:53 #tops:26 #tora:-27 #tory:-18 #tosi:29 #tota:-34
#towa:46 #trab:-35 #trac:76 #trad:-19 #trae:98 #trai:45 #tral:18 #tran:107 #trar:45 #trea:-22 #tree:39 #tric:28
#trip:-25 #troc:-31 #truc:51 #true:47 #tsel:51 #tter:-58 #ttin:27 #ttle:26 #tues:23 #tuff:42 #tula:-23 #turn:171
#tuvi:55 #twic:63 #uand:45 #ubic:-40 #ubid:52 #uble:18 #uces:26 #ucho:26 #udde:19 #uddl:36 #uder:-55 #ueak:-123
#ueal:37 #ueco:19 #ueda:26 #uede:-25 #uedo:-79 #uego:30 #uele:82 #uelt:31 #uema:49 #uena:40 #ueno:-19 #uerz:62
#uest:31 #uete:20 #ueva:-69 #uido:-47 #uien:-24 #uier:73 #uiso:48 #uita:33 #uito:46 #uivo:-25 #ulce:20 #ulde:93
#ulle:-60 #ulls:47 #ulti:-23 #umbe:-48 #umbi:26 #umbr:78 #umbs:-21 #umer:-18 #umpe:23 #umps:53 #unda:30 #unde:120
#unds:-73 #unni:27 #unqu:49 #unst:-19 #unta:-32 #uper:19 #uphi:63 #urni:54 #urns:120 #ursd:-24 #urva:23 #usad:-25
#usan:-37 #ushi:27 #uspe:20 #uste:-39 #usto:-39 #utch:18 #utra:18 #uvie:55 #vaca:-33 #vaci:31 #vado:-32 #vapo:33
#vece:34 #velo:66 #vend:-107 #vent:22 #vere:-49 #verh:48 #vers:77 #very:20 #vewa:71 #vibr:124 #vien:25 #vier:30
#visi:-56 #voca:-23 #vola:73 #vorc:-18 #vuel:23 #wall:67 #ward:103 #warn:-97 #wate:37 #weir:18 #went:136 #were:-60
#what:-110 #whee:48 #when:73 #wher:23 #whic:-84 #whil:18 #whin:54 #whoe:-29 #whol:83 #wice:63 #wild:-25 #will:-84
#wind:-22 #wing:39 #wipe:-158 #wire:63 #with:-87 #wobb:69 #wont:47 #work:21 #wors:38 #woul:-24 #writ:-22 #wron:-26
#xcla:57 #xhau:38 #xtin:-20 #yeah:-48 #year:-31 #ying:28 #ymbo:29 #ymor:19 #your:-130 #ysel:-18 #ythi:-38 #zero:22
#zumb:30 %again_later%away:-27 %again_later%bad:-18 %again_later%busy:-36 %again_later%car:-27
%again_later%car_part:98 %again_later%elsewhere:-34 %again_later%fails:88 %again_later%family:-28
%again_later%gone_car:48 %again_later%leak:36 %again_later%leave_me:59 %again_later%lift:-24 %again_later%message:-43
%again_later%noise:128 %again_later%odometer:-18 %again_later%pay_day:-26 %again_later%phone:44
%again_later%question:-36 %again_later%refuse:52 %again_later%season:-63 %again_later%shake:57
%again_later%shift_it:-72 %again_later%smoke_smell:53 %again_later%start_again:58 %agree:-92 %agree%away:46
%agree%bad:57 %agree%bring:-59 %agree%car:-19 %agree%doubt:-51 %agree%elsewhere:46 %agree%fails:22 %agree%family:-22
%agree%leak:32 %agree%machine:18 %agree%money:72 %agree%noise:28 %agree%on_way:61 %agree%place:56 %agree%question:115
%agree%shake:112 %agree%smoke_smell:106 %agree%thanks:-36 %agree%wrong_one:30 %away:-73 %away%bad:30 %away%busy:-51
%away%call_off:-24 %away%car_part:94 %away%leave_me:-24 %away%money:20 %away%noise:57 %away%on_way:-22
%away%place:-22 %away%question:-34 %away%refuse:-40 %away%smoke_smell:24 %bad:-46 %bad%call_off:-25 %bad%car:-25
%bad%car_part:-35 %bad%leak:47 %bad%machine:31 %bad%meaning:43 %bad%noise:35 %bad%pay_day:-22 %bad%shake:52
%bad%staff:-31 %bring:-86 %bring%busy:-18 %bring%call_off:51 %bring%car:31 %bring%car_part:94 %bring%elsewhere:-20
%bring%how_long:20 %bring%leave_me:83 %bring%lift:20 %bring%message:-25 %bring%on_way:51 %bring%place:71
%bring%question:132 %bring%refuse:19 %bring%shift_it:18 %bring%smoke_smell:27 %bring%start_again:30 %busy:-43
%busy%call_off:-45 %busy%fails:-35 %busy%noise:26 %busy%question:32 %busy%refuse:-44 %busy%shift_it:23
%call_off%car:28 %call_off%do_it:66 %call_off%elsewhere:-31 %call_off%fails:-112 %call_off%how_long:63
%call_off%leak:-33 %call_off%leave_me:102 %call_off%meaning:29 %call_off%message:-59 %call_off%money:54
%call_off%noise:-18 %call_off%odometer:-95 %call_off%on_way:26 %call_off%pay_day:18 %call_off%phone:57
%call_off%place:46 %call_off%refuse:48 %call_off%shift_it:28 %call_off%staff:-33 %call_off%start_again:24
%call_off%thanks:27 %call_off%who:-27 %car:77 %car%car_part:47 %car%elsewhere:-33 %car%fails:199 %car%gone_car:-91
%car%leave_me:59 %car%lift:-64 %car%noise:102 %car%pay_day:32 %car%place:25 %car%refuse:-24 %car%season:-19
%car%shake:74 %car%shift_it:51 %car%smoke_smell:59 %car%start_again:28 %car%thanks:-27 %car%wrong_one:-91
%car_part:386 %car_part%do_it:-190 %car_part%doubt:55 %car_part%fails:21 %car_part%family:-76 %car_part%how_long:75
%car_part%leak:64 %car_part%leave_me:168 %car_part%machine:47 %car_part%money:-48 %car_part%noise:-156
%car_part%odometer:64 %car_part%on_way:110 %car_part%opening:66 %car_part%phone:67 %car_part%place:104
%car_part%refuse:23 %car_part%shake:155 %car_part%shift_it:-32 %car_part%smoke_smell:160 %car_part%staff:-65
%car_part%start_again:62 %car_part%who:-25 %do_it:-172 %do_it%doubt:28 %do_it%fails:18 %do_it%gone_car:-53
%do_it%leak:80 %do_it%money:19 %do_it%on_way:36 %do_it%question:41 %do_it%refuse:71 %do_it%season:-27
%do_it%shift_it:29 %do_it%smoke_smell:18 %do_it%staff:-23 %do_it%start_again:37 %do_it%thanks:-18
%do_it%wrong_one:-42 %doubt:37 %doubt%elsewhere:41 %doubt%noise:25 %doubt%odometer:-20 %doubt%on_way:58
%doubt%shift_it:22 %doubt%wrong_one:26 %elsewhere:-64 %elsewhere%fails:72 %elsewhere%lift:-26 %elsewhere%on_way:28
%elsewhere%place:56 %elsewhere%refuse:-51 %elsewhere%season:-23 %elsewhere%shift_it:-37 %elsewhere%smoke_smell:-21
%fails:417 %fails%gone_car:98 %fails%how_long:56 %fails%leak:35 %fails%leave_me:-117 %fails%message:-19
%fails%money:-18 %fails%on_way:40 %fails%place:78 %fails%refuse:45 %fails%season:-24 %fails%shake:-31
%fails%smoke_smell:-66 %fails%who:-49 %fails%wrong_one:152 %family:-98 %family%gone_car:-25 %family%leak:21
%family%meaning:-18 %family%odometer:-83 %family%on_way:19 %family%staff:67 %gone_car:-209 %gone_car%leave_me:44
%gone_car%money:-19 %gone_car%shift_it:-28 %gone_car%start_again:40 %gone_car%thanks:-24 %gone_car%wrong_one:-34
%how_long:-43 %how_long%noise:41 %how_long%opening:-23 %how_long%question:-43 %how_long%start_again:26
%how_long%who:-21 %leak:281 %leak%money:35 %leak%on_way:56 %leak%question:73 %leak%refuse:-73 %leak%smoke_smell:-19
%leak%staff:-20 %leak%thanks:-20 %leak%wrong_one:-25 %leave_me:-72 %leave_me%message:-62 %leave_me%noise:30
%leave_me%on_way:22 %leave_me%phone:37 %leave_me%place:33 %leave_me%question:56 %leave_me%refuse:34
%leave_me%season:-45 %leave_me%shift_it:-26 %leave_me%smoke_smell:-64 %leave_me%start_again:48 %leave_me%wrong_one:19
%lift:-61 %lift%on_way:23 %lift%place:44 %lift%refuse:-35 %machine:32 %machine%meaning:35 %machine%shake:41
%machine%wrong_one:36 %meaning%odometer:-18 %meaning%phone:23 %meaning%question:-28 %meaning%refuse:45
%meaning%shake:43 %message:-178 %message%place:-22 %message%question:-18 %message%refuse:-22 %message%start_again:-50
%money:-137 %money%noise:73 %money%question:-26 %money%refuse:29 %money%shift_it:-18 %money%smoke_smell:66 %noise:458
%noise%odometer:59 %noise%on_way:71 %noise%pay_day:23 %noise%phone:33 %noise%place:65 %noise%question:222
%noise%refuse:72 %noise%shake:-19 %noise%shift_it:78 %noise%smoke_smell:-40 %noise%staff:31 %noise%start_again:90
%noise%wrong_one:92 %odometer:-67 %odometer%on_way:19 %odometer%place:57 %odometer%question:-31 %odometer%refuse:-48
%odometer%shift_it:-30 %on_way:-51 %on_way%question:71 %on_way%refuse:-23 %on_way%shake:37 %on_way%staff:38
%on_way%start_again:36 %on_way%wrong_one:19 %pay_day:-63 %pay_day%question:-20 %pay_day%season:-25 %phone:-63
%phone%place:35 %phone%question:-41 %phone%start_again:43 %phone%who:-26 %place:18 %place%question:48
%place%refuse:27 %place%smoke_smell:-27 %place%who:-27 %place%wrong_one:29 %question:-120 %question%refuse:41
%question%shake:140 %question%shift_it:85 %question%smoke_smell:58 %question%start_again:-63 %question%who:-77
%refuse:-84 %refuse%shake:-23 %refuse%shift_it:46 %refuse%smoke_smell:-30 %refuse%start_again:66 %refuse%thanks:-18
%refuse%wrong_one:70 %season:-115 %season%shift_it:-27 %season%smoke_smell:-44 %shake:426 %shake%start_again:21
%shift_it:42 %smoke_smell:433 %smoke_smell%who:-19 %staff:-70 %start_again:-44 %thanks:-122 %who:-146 %wrong_one:-130
@?:-201 @after_visit:27 @car:-110 @confirm_stop:-82 @later:-107 @nothing:63 @odometer:-18 @offers:-81 @reading:-153
@time:-74 @times:-135 @walk_in:-50 ^_$:-23 ^_a:-77 ^_airbag:41 ^_al:27 ^_all:-20 ^_anda:70 ^_ando:-58 ^_ay:24
^_baja:-75 ^_battery:36 ^_both:34 ^_brakes:22 ^_cada:23 ^_can:-114 ^_cant:31 ^_car:179 ^_como:-34
^_congratulations:-21 ^_coolant:39 ^_could:-19 ^_cual:-22 ^_cuando:-84 ^_cuanto:-38 ^_de:-40 ^_dice:32 ^_do:-52
^_donde:-61 ^_el:131 ^_en:-43 ^_estoy:-41 ^_fire:-27 ^_flat:-31 ^_found:57 ^_go:-22 ^_going:-41 ^_hace:46 ^_hay:56
^_headlights:29 ^_heard:36 ^_hey:-18 ^_hit:-102 ^_how:-128 ^_hoy:40 ^_huele:49 ^_i:-127 ^_id:-38 ^_if:-46 ^_ill:-61
^_im:-82 ^_info:-18 ^_is:-200 ^_it:102 ^_just:-73 ^_la:112 ^_las:92 ^_le:131 ^_left:-18 ^_let:-21 ^_lo:-30 ^_lost:84
^_loud:22 ^_mande:-27 ^_mas:-66 ^_my:69 ^_never:-18 ^_new:-19 ^_no:-45 ^_not:-56 ^_on:-76 ^_one:41 ^_para:-25
^_pedal:20 ^_pink:28 ^_por:-19 ^_que:-125 ^_quede:-59 ^_quedo:-35 ^_quit:-77 ^_rear:45 ^_running:41 ^_se:-62
^_second:23 ^_shake:-44 ^_she:27 ^_si:30 ^_smells:22 ^_smoke:-40 ^_sounds:-74 ^_start:-144 ^_steering:37 ^_still:-50
^_stop:-96 ^_stuck:-49 ^_su:-26 ^_suena:-35 ^_sure:-24 ^_takes:25 ^_tengo:32 ^_thanks:-18 ^_the:77 ^_there:102
^_they:-42 ^_this:-27 ^_thursday:26 ^_tiembla:44 ^_tiene:80 ^_tienen:-27 ^_tire:65 ^_todo:-71 ^_too:-19 ^_took:27
^_trae:133 ^_traffic:-23 ^_traigo:19 ^_una:20 ^_we:-43 ^_were:-18 ^_what:-137 ^_when:-108 ^_whenever:-22 ^_where:-24
^_which:-73 ^_who:-19 ^_whole:64 ^_why:-27 ^_will:-44 ^_wont:-37 ^_y:-49 ^_ya:-77 ^_yeah:-31 ^_yes:61 ^_you:-122
^_your:-35 a:89 a__and:94 a__book:-25 a__can:21 a__de:-19 a__in:93 a__is:18 a__noise:19 a__now:-35 a__on:44
a__out:-28 a__quemado:18 a__sound:33 a__tire:-40 a__with:28 a__y:-18 a_bit:33 a_como:-53 a_la:19 a_las:-55 a_mi:-46
a_pothole:26 a_quemado:20 a_ride:-24 a_rip:20 abajo:119 abajo_$:82 able:-24 able_to:-24 about:22 about_the:-19
about_to:71 aceite:29 acelerador:30 acelero:18 adelante:-92 adelante_$:-90 adentro:21 after:31 after_$:-18 after_a:21
after_i:45 again_$:-69 agarra:55 agradece:-62 agradece_$:-44 agua:143 agua_$:91 agua__el:-20 aguanta:48 ahead:-35
ahead_and:-21 ahi:-19 air:62 airbag:55 aire:32 al:85 al_cien:-27 al_frenar:39 al_rato:-26 alarm:-21 algo:81 all:46
all_$:-36 all__on:31 all__the:33 all__way:57 all_good:-44 all_over:43 all_the:57 alla:-19 almost:27 along:39
already:-43 already_$:-21 also:67 amanecio:38 amber:32 an:-40 and:235 and__doesnt:-27 and__dont:42 and__is:36
and__it:20 and_i:49 and_it:77 and_now:75 and_the:90 and_then:24 anda:109 andan:27 ando:-92 ando_en:-25
anticongelante:43 anticongelante_$:45 anymore:19 anything:-34 apaga:32 apago:24 apenas:42 aqui:-54 aqui_$:-41 are:-54
are__the:-27 are__to:66 are_about:66 are_in:-37 are_you:-23 arrancar:28 arrancar_$:24 arrastrando:24 arrastrando_$:24
as:-56 asi:-28 ask:-35 at:21 at__speed:26 at_all:-34 at_idle:23 at_my:-23 at_work:-42 aunque:49 away:71 ay:24 ayer:46
azul_$:-25 back_$:-42 back_end:44 backing:18 bad:43 baja:-91 baja_$:-27 baje:25 baje_la:25 ball:64 barely:33
battery_was:30 be:-206 be__to:-24 be_able:-23 be_there:-55 bearing:-25 been:40 been_on:26 before:22 better:-36
better_$:-33 bien:-51 bien_$:-126 bien__que:29 bike:-51 bill:-36 bit:29 black:41 blanco:48 blew:27 blinker:82
book:-40 book_it:-21 both:52 bought:-18 box:32 box_$:33 brake_$:38 brake__flush:-31 brake_fluid:-42 brake_job:-43
brakes_$:-81 brakes__like:28 brakes__stop:28 brakes_are:39 break:-57 bridge:-20 brinca:37 bring:-30 broke:34
broken:57 bumper_$:22 bumps:48 bumps_$:37 burning:49 but:201 but__is:92 but_it:98 but_my:41 but_the:40 but_there:45
by_itself:37 by_the:40 cada:66 calento:28 calienta:34 call:-26 calle:-25 cambiaron:-37 cambiaron_la:-22 cambie:-22
cambio:-38 cambio__aceite:-24 cambio_de:-31 cambios:120 came:41 came_on:94 came_up:-35 can__a:20 can__check:-28
can__drive:-28 can__get:-18 can__me:41 can__move:-23 can__the:27 can_i:-98 can_we:-28 cancel:-31 cancel_$:-19
cant__in:22 cant_get:50 cant_stop:25 car:30 car_is:-32 car_wont:21 carga:44 carretera:21 carretera_$:19 carro:50
carro_$:-25 carro__como:59 carro_se:22 casa:-65 casi:53 casi_no:46 catches:58 catches_$:58 change:-31 check_engine:34
check_the:-21 chispas:54 cien:-29 cien_$:-18 cita:-52 cita_$:-30 clutch:18 cochera:30 cochera_$:19 coffee:50 cofre:20
cold:45 come:-41 come_in:-33 come_thursday:-21 coming_$:-29 como:121 como_de:27 compre:-19 congratulations:-21
contento:-42 coolant:40 covered:-42 covered_$:-33 crank:31 cranks:58 crazy:38 crooked:22 cual:-26 cuando:45
cuando__vuelta:31 cuando_doy:31 cuando_freno:20 cuando_me:-26 cuanto:-26 cuanto__el:-22 cuesta:36 cut:26 da:69 dar:49
dash:38 dash_$:21 day:-47 day_$:-18 days:29 days_$:34 de:-55 de__bateria:26 de__llanta:-43 de_abajo:52 de_agua:49
de_baja:-20 de_la:-51 de_las:-38 de_llantas:-18 de_los:-38 dead:25 dealer:-18 debajo:47 debajo_del:35 dejaron:45
del:88 del__esta:29 del_aceite:36 del_carro:19 del_cofre:20 derecha:20 desde:49 desde_que:24 desk:-21 dia:-32 dice:52
dice_que:46 did:-73 did_it:-23 did_my:-19 died:71 died__the:40 digo:-19 dim:23 dios:21 direccion:-94 direccion_$:-84
do:-141 do__charge:21 do_i:-53 do_it:-27 do_you:-31 does__a:59 does_a:-35 does_it:-19 doesnt:68 doesnt__anymore:31
doesnt_work:18 dog:-22 donde_estan:-19 done:-45 dont:42 dont_see:24 door:-151 door_$:-96 dos:18 down:111 down_$:-27
down__street:40 down__the:44 doy:28 doy_vuelta:31 dream:-50 drive:86 drive_$:129 drive_it:-33 drives:-116
drives__as:-46 drives_like:-71 driveway:71 driveway_$:64 driving:39 driving_$:32 drop:-25 dropped:34 dry:-33 dulce:20
duro:-30 el:84 el__a:-59 el__cuanto:18 el__de:-27 el__del:24 el__le:19 el__lo:-21 el__no:85 el__pero:43 el__se:122
el__va:48 el__vibra:21 el__y:49 el_aceite:-58 el_acelerador:30 el_anticongelante:47 el_cambio:-27 el_carro:28
el_de:-53 el_freeway:-25 el_freno:70 el_humo:-23 el_jueves:-20 el_martes:-28 el_mofle:25 el_motor:27 el_pedal:38
el_ruido:-26 el_sabado:-19 el_trabajo:-56 el_volante:76 en:54 en_$:-19 en__calle:-18 en__carretera:21 en__casa:-48
en__cochera:30 en__freeway:-25 en__mananas:24 en_el:-31 en_frio:21 en_las:85 en_los:46 en_que:-29 en_un:-27 end:53
enfrente:42 engine:93 entran:100 entrar:46 entro:-18 equivocado:-23 equivocado_$:-19 era:-28 es:-81 es_$:-43
es_que:40 ese:-22 eso:-78 eso_$:-19 esta:34 esta__la:-34 esta_baja:-28 estan:-57 estan_$:-50 estoy:-52 ever:-22
every:27 every_morning:52 ex:-30 exclamation:54 exclamation_mark:54 exhaust:38 eyes:18 fan:20 favor_$:-50 favor_y:22
feel_like:-25 feels:104 feels_like:50 fell:-31 feo:18 fill:36 fine:-23 fine_$:-50 finger:26 fire:-21 first:-46
first_$:-63 fix:36 fixed:-91 fixed_$:-21 flashing:20 flat__the:43 flat_out:-36 fluid:-53 fluid_$:-25 fluid_flush:-31
flush:-43 flush_$:-35 foco:-57 foquito:36 for:-110 for__appointment:18 for__brakes:-24 for__first:19 for_brakes:-21
for_the:-45 forever:21 forever_to:47 found:43 found_a:48 freeway_$:27 frena:80 frenar:86 frenar_$:59 freno:116
freno_$:28 frenos:-44 frenos_$:-80 friday__it:28 friday_at:-27 friend:61 frio:34 frio_$:34 from:61 from__back:26
from__the:49 from_the:42 from_under:46 front_desk:-19 front_tire:20 fue:-68 fuerza:63 fuga:77 garage:41 garage_$:20
gear:91 gear_$:52 get:69 get__on:37 get_a:22 get_it:59 get_my:-22 go:93 go_$:50 go_ahead:-25 goes:53 going:67
going__be:-24 going_to:-110 going_up:40 gone:-54 gone_$:-29 good:-39 good_$:-29 got:19 got_a:39 got_it:-20 got_to:21
gracias:-30 gracias_$:-68 great:-73 green:52 grinding:70 gusto:-27 guy:-43 hace:124 hace_ningun:-21 hace_un:53
hacen:-56 haciendo:38 had:40 had__get:49 had_a:-25 had_to:88 haha:-33 hanging:35 happens__i:-19 happens_if:-19
hard:37 hard_to:29 has:-51 has__on:27 has_a:-40 has_been:28 hasta:19 hasta_que:-19 have__it:19 have_a:19 hay:50
hay_que:26 headlights:94 hear:40 heard:40 heard_a:36 help:23 help_$:-28 help__stuck:46 help_im:46 her:-22 here:-76
here_$:-55 hey:-18 hi:-27 highway:32 hill:57 hill_$:47 hills:89 hills_$:77 his:-57 his_bike:-48 hit:-53
hit__pothole:26 hit_a:29 hold:98 home:23 home_$:21 hood_$:-37 hora:-47 hora_$:-51 hot:19 hour:-18 how:-176
how__are:-20 how__for:-24 how__is:-41 how__to:20 how_long:-19 how_low:-36 how_much:-69 hoy:68 hoy__manana:-34
hoy_no:38 huele:82 huele_a:67 huevo:26 hum:24 humo:68 humo__al:24 humo_blanco:33 humo_negro:37 i:75 i__a:59 i__be:-56
i__down:29 i__for:-21 i__in:-20 i__it:-36 i__like:-33 i__on:34 i__see:69 i__smoking:-56 i__that:35 i__the:24
i__there:-18 i__who:-23 i_came:-30 i_can:72 i_come:-19 i_dont:33 i_get:-58 i_had:29 i_have:46 i_hit:65 i_just:-24
i_know:-18 i_left:-36 i_moved:27 i_need:-59 i_park:66 i_quit:-56 i_skip:-22 i_slow:29 i_stop:29 i_think:110 i_was:-24
i_wont:-75 id:-40 id__to:-37 id_like:-38 idea:22 idle:99 idle_$:20 if:-24 if__skip:-22 if_i:19 if_it:-36 igual:28
igual_$:31 ill:-110 ill__it:-37 ill__you:-23 ill_do:-26 ill_let:-25 im__on:32 im__the:-28 im_good:49 im_on:-37
im_stuck:45 in:33 in_$:-72 in__and:20 in__car:-38 in__garage:22 in__is:-29 in__middle:22 in__morning:-21 in__now:44
in__shop:-20 in__sidewall:26 in_a:46 in_and:-18 in_it:-23 in_park:57 in_second:75 in_the:18 info:-20 info_$:-18
interested:-22 interested_$:-20 into_the:-28 is:60 is__brake:-51 is__but:26 is__car:-28 is__going:-22 is__hard:20
is__in:28 is__like:26 is__out:30 is__the:-68 is__what:21 is_at:-25 is_cold:27 is_fixed:-37 is_getting:22 is_going:33
is_gone:-50 is_got:27 is_in:-45 is_it:-142 is_leaking:34 is_making:33 is_no:-21 is_out:18 is_perfect:-25
is_shaking:45 is_something:-24 is_the:-90 is_there:-27 is_this:-34 isnt:-19 it:140 it_$:-189 it__cold:27 it__down:36
it__got:27 it__i:-24 it__in:-27 it__into:23 it__like:-27 it__on:-22 it__over:19 it__the:-87 it__then:41 it__to:-40
it__when:49 it_a:-24 it_back:-38 it_died:28 it_does:72 it_doesnt:-31 it_friday:-29 it_in:-40 it_just:29 it_like:-33
it_makes:40 it_off:-22 it_on:-45 it_over:-25 it_smells:18 it_starts:-30 it_still:56 it_takes:27 it_thursday:-21
it_turns:27 it_wont:62 itself:51 itself_$:27 jaja:-49 jaja_$:-32 jalonea:31 jerks:25 job:-64 juego:42 jueves:-19
jueves_$:-26 jueves__las:-21 jueves_a:-21 jueves_pero:20 just:18 just__on:50 just_died:39 k:-30 k_$:-24 keeps:70
key:48 kid:-43 kid__a:-36 kid_has:-47 knock:-36 knocking:23 know_who:-22 la__de:27 la__del:50 la__en:-21 la__hoy:-30
la__no:97 la__se:47 la__trae:20 la__y:-37 la_bateria:34 la_carretera:21 la_casa:-55 la_cita:-43 la_cochera:30
la_hora:-51 la_lavadora:-19 la_llanta:57 la_luz:-29 la_noche:-19 la_palanca:29 la_pila:53 la_reversa:47 la_rueda:32
la_segunda:21 la_suspension:21 la_troca:-30 la_velocidad:36 lado:64 lado_$:37 las:153 las_$:-37 las__ya:35
las_balatas:18 las_llantas:-39 las_mananas:24 last:-45 last_night:50 last_year:-39 latch:51 late:-88 late_$:-99
lately:82 lately_$:81 lavadora:-34 le:114 le__a:-41 le__cuando:52 le__un:60 le_sale:91 leak:-60 leaking:50 leaks:-29
leaks_no:-43 left:-98 left_$:-27 left__the:-28 left_a:-88 left_blinker:82 left_on:-37 left_rear:19 let:22
let__know:-22 let_go:84 let_me:-26 let_you:-22 light:35 light__on:59 light_came:54 light_is:56 lights:-95
lights_$:-96 like:100 like__in:56 like__is:23 like__on:25 like_crazy:40 like_to:-41 limpiaparabrisas:-62 line:30
line_$:33 liquido:-23 lit:18 little:28 llanta:120 llanta_$:-20 llanta_trae:20 llantas:-118 llantas_$:-73 llego:-66
llego_$:-43 lo:-102 lo__a:-32 lo__mi:-19 lo_vendi:-20 lol:-179 lol_$:-146 look_like:24 looks:54 loose:-37 loose_$:-31
los:118 los__no:36 los__rechinan:-50 los__se:27 los_cambios:116 los_ninos:41 lost:68 lot:-29 loud:38 louder:-55
low_$:-31 luces:26 lunes_$:-19 luz:-66 luz__la:-41 make:-74 make_it:-82 makes:75 makes_a:22 makes_the:35 making:44
making_a:30 manana_$:-40 mananas:24 mananas_$:27 manda:-19 mande:-29 marcha:99 marcha_$:78 mark:54 martes:-25
martes__el:-50 martes_pero:29 mas:-56 mas__que:20 mas_adelante:-66 mas_pronto:18 maybe_in:-20 me:-35 me_$:58
me__el:-69 me__en:35 me__la:-58 me__los:21 me__para:28 me__que:54 me__tirado:24 me__una:-21 me_da:-43 me_dejaron:-24
me_dejo:26 me_in:-18 me_manda:-18 me_quede:80 me_sale:21 me_up:-25 me_va:53 mean_on:-31 mechanic:44 meh:-21 mejor:-90
mejor_el:-19 metal:90 metal_$:48 metal__metal:23 mi:-97 mi_carro:33 middle:19 middle__the:25 middle_of:18 mil:-46
mil_$:-19 miles:-19 miles_$:-20 millas:-26 min:-142 min_$:-103 min_late:-22 mine:33 mis:-37 mismo:18 miss:-44
miss_it:-33 mofle:25 monday_$:-23 money:-33 more:-20 morning:57 morning_$:80 mornings:37 motor_$:20 move:-22 much:-88
much__a:-26 much_for:-22 much_is:-30 much_to:20 mucho_para:30 muy:-75 my:-40 my__back:-18 my__car:-25 my__going:-24
my__has:-59 my__in:-24 my__is:26 my__keeps:38 my__wont:40 my_brakes:67 my_car:-32 my_driveway:50 my_kid:-51
my_mechanic:70 my_number:-25 my_oil:46 my_old:-18 my_own:-18 my_tire:34 my_tires:55 my_way:-58 my_work:-25 myself:-18
nada:-50 nail:21 nearly:31 need:-108 need__ride:-23 need_a:-34 need_to:-48 needing:27 needle:46 negro:49 neutral:18
neutral_$:18 new:-85 new_$:-51 new_battery:-39 next:-88 next_week:-55 ni:-48 ni__ni:-20 night:41 night_$:27
ningun:-93 ningun_ruido:-27 ninguna:-57 ninos:40 ninos_$:56 no:41 no_$:-133 no__all:-34 no__at:-54 no__bien:41
no__el:18 no__en:25 no__here:-22 no__it:27 no__la:37 no__los:56 no__nada:-52 no__ni:-36 no__ningun:-81
no__ninguna:-55 no__no:-99 no__nomas:22 no__on:-22 no__you:20 no_agarra:50 no_arranca:24 no_frena:80 no_hace:-28
no_hay:-38 no_it:21 no_leaks:-47 no_me:30 no_noise:-93 no_para:41 no_prende:48 no_quiere:84 no_quiso:48
no_rechina:-21 no_se:-25 no_smoke:-40 no_thanks:39 no_tiene:-67 no_trae:-76 no_voy:22 no_you:-43 nobody:-19
noise_$:53 noise__all:-63 noise__fixed:-19 noise_at:-59 noise_that:23 noises:-27 noisy:-28 nomas_el:-49 normal:33
nose:19 not:-103 not__now:-20 not__week:40 not_going:-22 not_interested:-21 not_right:-35 not_this:38 nothing:37
now_$:-91 now_it:36 nuevas:-50 nuevas_$:-25 nuevo:-20 number:-45 number_$:-26 o:-26 of:51 of_$:-19 of__all:47 of_a:24
of_my:31 of_the:29 off__i:19 oil:-39 oil_change:-23 oil_light:26 oil_pressure:41 ok_$:-18 ok_friday:33 old:-43 on:183
on_$:28 on__freeway:47 on__highway:18 on__hill:42 on__i:32 on__is:21 on__side:22 on__th:-43 on__way:-42 on_a:55
on_after:31 on_hills:54 on_me:55 on_my:-76 on_your:-29 once:-35 one_$:-62 one__my:29 one_is:-23 one_of:36 one_side:21
open:46 or:-104 or_anything:-33 or_the:-18 other:22 otra:19 otra_vez:38 otro:-42 out:66 out_$:38 out__door:-29
out__me:40 out__the:19 out_last:21 out_no:-34 out_on:45 over:142 over_$:40 over__the:27 over_bumps:37 over_the:20
oye:104 oye_un:35 pads:-45 pads_are:-20 palanca:29 para__en:32 para__lado:37 para_el:-33 para_la:27 para_un:37
park:125 park_$:88 pasar:80 paso:32 pass:-27 pass_$:-28 past:57 past_$:28 pedal:125 perfect:-29 perfect_$:-27
pero:142 pero__no:21 pero_le:34 phone:-47 phone_$:-23 pick:-22 pie:22 pierde:93 pila:53 ping:25 pink:28 place:-20
plan:-78 plan_$:-72 plastic:35 please_$:-37 please__is:19 point:30 pole:35 por__y:24 por_que:-28 porque:40
porque_se:30 pothole:26 power:103 precio:-31 prende:108 prende_$:37 prender:41 prendida:-51 prendido:-46
prendido_$:-32 prendio:34 pressure:45 price:-53 price_$:-23 puddle:36 puede:-21 puedo:39 puente_$:18 pull:-55
pulled:-50 pulled_a:-33 pulls:47 pump:59 put:-31 que:107 que__estan:-21 que__le:-19 que_baje:33 que_es:-23 que_la:23
que_le:-43 que_se:35 quede_muy:-51 quedo:-117 quedo_$:-25 quemado:33 quien:-27 quiere:92 quiero:-19 quiso:48 quit:-87
quit_$:-40 quit_on:45 quit_smoking:-63 quita:35 quita_$:35 radiador:21 raining:24 raro:43 rato:-28 reads:33 real:27
really:24 rear:51 rechinando:21 red:-66 red_light:-93 reminders:-27 reminders_$:-24 replaced:-61 replaced_the:-45
report:-29 reversa:63 reversa_$:56 reverse:55 ride:-28 ride_$:-21 right:-111 right_$:-47 right_now:-88 rip:20
road:-20 rock:23 rojo:30 rough:64 rueda:34 ruido:62 ruido_$:56 ruidos:-90 ruidos_ni:-39 running:27 running_late:-21
runs:-21 sabado:-21 said:-42 sale:109 sale_$:-52 sale__velocidad:31 sale_humo:50 sale_un:32 sale_vapor:24 same:-19
say:-28 says:47 se:259 se__con:-28 se__hasta:18 se__la:-44 se__llevo:-31 se__que:47 se__sale:23 se__sin:25 se__un:41
se__va:63 se__y:46 se_apaga:23 se_calento:25 se_calienta:34 se_equivocado:-20 se_esta:25 se_fue:-41 se_jalonea:28
se_la:-26 se_le:43 se_lo:-109 se_los:-18 se_me:113 se_oye:97 se_puede:-26 se_queda:20 se_quita:35 se_siente:27
se_va:36 seat:46 second:62 second_$:-24 second_gear:78 sedan:-18 see:84 segunda:26 segunda_$:26 sending:-25 set:-21
shake:-82 shake__it:-44 shake_on:-44 shakes:60 shaking:24 she:48 shifts:79 shimmies:69 shop:-42 shoulder:93
shoulder_$:47 showed:34 shut:81 shut_$:41 shuts:25 shuts_off:25 si:34 si__martes:31 si__no:-18 si_el:27 si_pero:40
side:27 sidewall:26 siente:27 siente_que:19 sign:-31 sign__up:-18 sign_me:-20 sigue:53 sin:53 since_i:37 skip:-29
sky:29 smell:37 smells:35 smells_like:52 smoke:-52 smoke_break:-38 smoke_from:-22 smoking:-87 so:-48 so__i:18
so_i:-24 sola:20 sold:-30 solo:32 some:-25 something:20 something__up:-38 something_came:-38 soon:-18 sooner:20
sorry:-52 sorry_$:-18 sound:51 sounds:-77 sounds__a:-89 sounds_good:-20 sounds_like:-46 soy:-27 sparks:44 speed:65
speed_$:39 squeaking:-52 squeaks:-56 start:-56 start_$:-56 started:24 starts:-58 stay:45 steam:21 steering:105
steering_got:22 step:52 still:33 still_on:-61 stop:74 stop_in:22 street:34 street_$:26 stuck__traffic:-34 stuff:42
stuff_$:34 su:-74 sube:35 suena_bien:-57 super:20 sure:-21 suspension:21 symbol:29 tablero:18 tailpipe:39 take:-29
takes:71 takes__to:67 takes_forever:43 talk:-29 taller:-30 taller_$:-22 tambien:53 tanto_que:18 temp:39 tengo:40
tengo_que:22 termometro:29 texting:-25 texts:-40 th:-65 th_$:-38 than:-39 thank:-19 thank_you:-18 thanks_$:-33
thanks_it:32 that_$:-32 that_is:-20 the:72 the__and:-40 the__at:-28 the__be:-37 the__box:33 the__brake:18 the__by:-21
the__doesnt:66 the__down:51 the__end:42 the__from:-32 the__front:45 the__has:-31 the__if:35 the__it:34 the__job:-34
the__light:36 the__line:44 the__need:-33 the__next:-22 the__off:-20 the__since:36 the__to:23 the__up:-22 the__was:-40
the__went:97 the__were:-27 the_back:92 the_battery:-24 the_brakes:-24 the_bridge:-18 the_car:-49 the_dog:-23
the_door:-93 the_drive:19 the_engine:20 the_freeway:47 the_garage:23 the_hill:32 the_leak:-36 the_mechanic:-23
the_middle:23 the_morning:-24 the_noise:52 the_oil:-23 the_old:-29 the_pedal:40 the_phone:-19 the_rear:18
the_right:32 the_seat:39 the_second:-43 the_shop:-26 the_shoulder:90 the_sidewall:26 the_sky:29 the_smoke:-25
the_steering:38 the_stop:34 the_street:-18 the_temp:22 the_texts:-27 the_th:-64 the_tires:-84 the_truck:78
the_visit:-46 the_way:78 the_wheel:47 the_whole:21 the_wiper:-31 them:-22 then_$:-31 then_it:36 there:65 there_$:-56
there__a:119 there__an:18 there__no:-19 there_a:-23 there_is:147 there_was:47 there_with:-20 these:-26 they:-59
they__the:-42 they_replaced:-35 things:-48 think:75 think_$:93 think__it:-24 this_$:-44 this__is:-31 this_morning:75
this_one:-33 this_week:69 those:-65 though:51 though_$:44 thousand:-19 three:72 through:43 through_$:22 thursday:-23
thursday_$:-57 tiembla:47 tienen:-42 tight:21 till:-25 time__hit:24 tira:38 tirado:24 tire:108 tire_$:33 tire_is:39
tire_on:-35 tires:-112 tires_$:-60 tires_look:19 to:39 to_$:-20 to__a:60 to__at:21 to__in:-18 to__it:46 to__late:-22
to__my:-23 to__off:25 to__the:26 to__to:-31 to_be:-31 to_call:-23 to_cancel:-18 to_drive:-37 to_fix:39 to_get:93
to_let:61 to_make:-18 to_say:-18 to_start:60 to_stop:39 toda:20 today:82 today_$:68 todo:-48 todo__con:-50
todo_bien:-77 todo_el:58 tomorrow:41 tomorrow_$:24 too_$:27 took__to:45 tosiendo:29 totaled:-24 tow:-19 toward:46
toward_the:46 trabajo:-58 trabajo_$:-23 trabajo_no:-34 trae:100 trae__la:55 trae__luz:-48 trae_la:30 trae_un:48
trae_una:40 traffic_is:-28 traigo:20 trail:50 trail_of:50 trip:-24 troca:-31 truck:43 truena:40 tues:38 turn:51
turns:120 twice:63 twice_today:29 two:45 ultima:-18 un:140 un__que:26 un_lado:53 un_ruido:51 un_zumbido:26 una:128
una__de:-18 una_llanta:49 una_luz:25 under:104 under__dash:22 under__hood:-37 under_me:58 under_the:54 up:76 up_$:31
up__the:-19 up_at:-26 uphill:63 us:-26 ustedes:-24 va:135 va_de:18 va_para:33 vacation:-27 van_a:-21 vapor:33
veces:34 velocidad:63 velocidad_$:63 venden:-44 vendi:-24 vendimos:-27 vez:27 vi:28 vibra:46 vibrates:53 viene:30
viernes:-19 viernes_$:-24 visit:-51 visit_$:-50 volante:76 volante_$:27 vuelta:29 vuelta_$:42 warning:-97 was:-73
was__again:34 was_a:42 was_fixed:-27 water:37 way:33 way_home:20 we:-94 we__it:-21 we_move:-23 week_$:-50 weird:18
went:136 went__in:23 went__on:46 went_away:86 went_out:59 were:-60 were__on:-33 what:-109 what__a:-25 what__if:-19
what__the:-40 what_do:19 what_does:-34 what_happens:-21 what_is:-58 wheel:89 wheel_bearing:-25 wheels:-41 when:97
when__i:-39 when__is:22 when__slow:-21 when__turn:20 when_i:139 when_it:37 when_the:-25 whenever:-23 where:38
where__i:-21 where_do:-21 where_i:51 which:-81 while:20 who:-52 whoever:-29 whole:83 whole_car:60 why:-40 will:-82
will_the:-38 window:-31 windshield:18 wiper:-51 wipers:-95 wires:56 with:-72 with_$:-21 with_speed:32 with_the:-57
wobbles:53 won:-18 wont:47 wont__able:-23 wont__in:27 wont__it:-86 wont__over:21 wont__there:-30 wont_be:-93
wont_go:22 wont_make:-55 wont_start:49 work:-62 works:75 worse:30 would:-37 would_i:-23 wrong:-26 y:151 y_$:-32
y__no:20 y__se:23 y_casi:30 y_me:-20 y_nada:31 y_no:30 y_se:27 y_ya:28 ya:-36 ya__cambiaron:-21 ya__en:22
ya__rechina:-19 ya_casi:18 ya_le:-42 ya_lo:-18 ya_me:23 ya_ni:31 ya_quedo:-27 yeah:-48 year:-31 year_$:-43 yes_$:-40
yes__works:61 yes_monday:28 yes_please:20 yo_no:22 you:-265 you_$:-33 you__a:-91 you__my:-30 you__the:-56
you_charge:21 you_check:-28 you_guys:-19 you_have:-25 you_left:-95 you_said:-22 your:-120 zero:22 zumbido:26
"""
