"""What speaks for and against `duration`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "duration"
BIAS = -212
WEIGHTS = """\
#abaj:37 #aben:-41 #aber:29 #abia:-31 #able:29 #abor:-32 #abre:-48 #acan:40 #acar:50 #acat:36 #acen:43 #acos:-27
#acue:-26 #ador:30 #afte:-41 #agar:-54 #ages:34 #agua:-25 #ails:-134 #ains:-25 #aite:-70 #aiti:-41 #ajan:-28
#ajit:-50 #akes:30 #alab:25 #alca:93 #alcu:111 #aldr:27 #algo:74 #alid:66 #alie:-28 #alis:49 #alki:51 #alla:27
#ally:88 #almo:45 #alon:-34 #alre:-29 #alta:106 #alte:-45 #ambi:27 #amie:-28 #amos:-65 #anca:-26 #anda:-47 #ando:-92
#anic:-28 #ansm:26 #anti:-58 #anto:140 #ants:32 #anty:-36 #anyt:-43 #anza:115 #anzo:40 #apag:-32 #apid:86 #appe:-29
#arad:-31 #aran:-70 #arca:-36 #arch:40 #arda:219 #ardo:34 #ards:-27 #arge:-39 #argo:32 #aria:162 #ario:-32 #arla:33
#arli:-53 #arlo:52 #arly:33 #aron:-233 #arou:68 #arpo:32 #arro:-27 #arty:-39 #asel:61 #asen:-28 #asid:41 #asta:-31
#atan:125 #ater:-65 #atie:-31 #atis:-36 #atll:27 #atro:73 #atur:27 #augh:-37 #auto:-49 #avia:-33 #avis:-25 #away:-39
#ayer:-44 #back:40 #baja:-35 #baji:-40 #bald:-27 #bank:44 #bast:82 #bate:-53 #beat:-41 #been:-99 #befo:-28 #biad:28
#biam:-31 #biar:-31 #bill:-49 #bomb:27 #book:40 #born:47 #both:-39 #brar:-34 #brea:78 #bren:-48 #brin:73 #buen:-48
#caba:48 #cabo:-32 #cada:-51 #caer:-47 #cafe:103 #cala:25 #calc:107 #came:52 #cana:59 #canc:-35 #canz:113 #capa:31
#card:-27 #carg:-41 #cari:57 #carp:32 #cars:-38 #cati:35 #ccio:-28 #cent:-31 #cerl:78 #cesa:-25 #chad:32 #char:-44
#ched:-27 #cial:-28 #cibe:-30 #cier:-49 #cita:-41 #cked:-49 #clav:-34 #clea:61 #cloc:30 #clos:56 #clut:32 #cobr:-43
#coff:44 #coge:120 #coll:63 #comi:-42 #comm:-39 #conf:39 #cont:-25 #cool:46 #coot:-29 #corr:-28 #cosa:28 #cost:33
#coup:36 #cree:69 #cual:-67 #cuan:169 #cuat:75 #cuel:-38 #cuen:-59 #cuer:-47 #cues:-35 #dado:78 #damo:-25 #dand:-26
#dara:117 #dari:73 #daro:-130 #davi:-33 #dawn:48 #deal:39 #debe:-40 #deer:25 #deja:42 #dejo:65 #demo:42 #depe:53
#ders:34 #deti:130 #devu:30 #dial:-28 #dias:152 #diez:-37 #diga:-45 #dijo:-28 #dila:156 #dine:-25 #diod:43 #dito:52
#does:136 #doll:-36 #done:125 #dont:-35 #dorm:74 #down:-26 #dred:-28 #dria:44 #driv:-57 #dule:-28 #dura:109 #each:-87
#eaci:29 #eady:74 #eali:60 #east:29 #eate:34 #ebaj:-40 #ecia:-28 #ecib:-35 #ecio:30 #ecog:86 #ecom:-39 #edam:-25
#edar:75 #eddi:30 #eded:74 #edio:63 #edir:30 #edul:-28 #eede:74 #eeds:-33 #eeke:34 #eepi:71 #efor:-28 #egan:91
#egre:76 #egui:25 #egur:-37 #eigh:-30 #eith:-37 #ejar:115 #eken:35 #elta:35 #elve:30 #eman:-48 #emor:51 #emos:-29
#empi:-26 #empo:87 #encu:-49 #enda:-41 #endr:39 #enen:84 #ener:78 #enes:-26 #enev:-36 #enga:-51 #engo:53 #enla:-28
#enou:77 #ensa:-25 #enta:59 #ente:-68 #ento:-43 #entr:134 #enty:-27 #epar:32 #epen:53 #epin:71 #eras:-28 #erde:51
#eres:-32 #erhe:25 #eria:-74 #erlo:81 #ermi:104 #erni:113 #erno:-71 #eros:-61 #erra:-57 #erso:-33 #erst:29 #erte:-61
#ervi:106 #erza:-39 #esan:105 #esar:-26 #esas:-71 #esco:-51 #escu:-38 #espo:-27 #essi:-31 #esta:156 #esto:-57
#eter:36 #etic:-26 #etie:124 #etim:-39 #etra:-29 #etro:-43 #evan:92 #evar:-74 #ever:-30 #evue:30 #extr:-25 #fail:-168
#falt:106 #fast:58 #ffee:44 #fila:45 #find:27 #fini:168 #firm:46 #five:47 #flie:-33 #flig:26 #flus:30 #fore:36
#free:-28 #frie:-30 #fron:50 #fter:-41 #fuga:-26 #game:43 #gara:-69 #garr:-28 #gast:-40 #gent:-36 #give:-34 #goes:35
#gone:-48 #good:-37 #gran:-29 #grat:-36 #gres:76 #gros:62 #gual:59 #guan:-36 #gues:-28 #gust:-35 #guys:25 #habi:-31
#hace:27 #hada:32 #hago:92 #hair:49 #half:-162 #hall:40 #hanc:40 #hang:37 #hani:-26 #happ:-27 #harg:-39 #harp:48
#hast:-73 #hatl:27 #hech:-26 #heck:-26 #hedu:-28 #hene:-36 #hens:162 #here:70 #hese:-107 #hice:-33 #hich:-51 #hijo:67
#hile:62 #hing:61 #hink:25 #hirt:-26 #hole:87 #hone:-27 #hool:38 #hoos:-31 #hort:44 #hose:44 #houg:-41 #houl:59
#hour:42 #howe:61 #huec:44 #huel:-26 #hump:-46 #hund:-35 #iado:28 #iamo:-35 #iaro:-26 #iben:-32 #ible:-30 #ibre:-50
#icio:39 #icle:28 #idad:-60 #iday:-35 #idea:67 #ided:63 #idge:26 #idit:61 #iece:60 #iemp:97 #iend:-50 #iene:39
#ierd:31 #iere:-31 #ierr:-53 #ific:-30 #ifts:35 #igam:-31 #ight:70 #igua:70 #ilat:156 #iles:-40 #ilim:-34 #illa:-40
#imes:-50 #imet:-34 #imos:30 #inan:108 #ince:-31 #inco:41 #inda:48 #indo:29 #iner:-25 #inis:168 #inos:48 #inut:26
#iodi:43 #iper:28 #ippi:26 #irle:-26 #irme:48 #irmo:-25 #irty:-26 #ishe:73 #ismo:59 #isti:60 #isto:37 #itan:29
#itar:25 #ited:-70 #ithe:-37 #itin:-40 #ittl:-27 #jalo:-31 #jarl:110 #jaro:-25 #jita:-50 #jove:-33 #junt:-29
#keep:-27 #kend:35 #kers:33 #kids:-37 #kind:42 #king:27 #know:-29 #labo:-32 #lace:-35 #lada:68 #lake:-25 #lant:-52
#larg:58 #lars:-29 #last:-103 #lata:138 #late:-117 #lava:-31 #lave:-58 #lcan:98 #lcul:111 #ldri:27 #lear:80 #lect:53
#leep:57 #left:-37 #lega:30 #lele:47 #leva:101 #leve:35 #lgui:32 #lgun:-25 #lida:60 #lien:-40 #lier:-53 #lies:-33
#lift:35 #ligh:58 #like:58 #lime:-34 #ling:68 #list:83 #litt:-27 #lkin:51 #llan:-31 #llar:-36 #llas:-35 #llav:-58
#llec:63 #llev:109 #llin:44 #lmos:45 #load:49 #lock:26 #lonc:34 #lone:-34 #long:265 #lose:82 #love:-39 #lrea:-29
#lube:-48 #lueg:-31 #lunc:-45 #lune:28 #lush:30 #lutc:32 #make:34 #mall:45 #malo:-53 #mana:-34 #mand:27 #mano:-45
#many:101 #mber:-41 #mbia:25 #mean:73 #mech:-26 #medi:56 #mela:-25 #mend:-39 #ment:27 #mero:90 #mete:68 #meti:-45
#meto:49 #metr:-35 #mida:-29 #mien:-55 #mile:-64 #mili:-34 #mill:-35 #mina:123 #mine:-47 #minu:26 #misi:31 #mism:48
#miss:90 #mito:-34 #mmen:-39 #mome:43 #mone:31 #mora:56 #more:-84 #morn:32 #most:35 #moun:31 #move:-52 #movi:-33
#mpie:-26 #mpor:-44 #mpra:27 #mpre:-33 #much:26 #muer:-61 #must:-101 #nada:62 #nail:69 #naro:55 #nces:-31 #ncha:32
#nche:25 #ncue:-49 #nday:28 #nded:-27 #nder:-25 #ndos:-44 #ndow:29 #ndri:27 #ndro:54 #neac:29 #neak:28 #near:67
#nece:-47 #need:68 #nene:-27 #nero:34 #next:-43 #nfir:39 #nger:110 #niec:60 #nigh:103 #nina:72 #nine:-54 #nino:36
#nish:161 #noma:28 #noon:99 #noug:77 #nsmi:26 #nsto:32 #ntar:-29 #ntas:136 #nten:-35 #nter:26 #ntes:39 #ntet:-26
#nths:-29 #ntia:-58 #nton:-29 #ntos:74 #ntra:35 #ntre:71 #ntro:28 #nute:56 #nuto:-30 #nyth:-43 #nzan:75 #oble:28
#obra:-109 #ocke:-45 #oclo:32 #odav:-33 #odia:43 #offe:44 #oger:51 #oked:-33 #olad:68 #olla:-36 #olle:59 #olli:60
#oman:52 #omas:28 #omat:46 #omba:27 #omen:43 #omet:-26 #omme:-39 #onch:58 #onea:-31 #oner:-36 #oney:31 #onfi:39
#onge:118 #ongs:69 #only:-61 #onst:30 #ooke:-33 #oose:-31 #oqui:-40 #orad:-29 #oras:41 #orde:32 #ords:-32 #orev:64
#orke:-53 #orks:27 #ormi:74 #orni:32 #orqu:-25 #orri:-25 #orta:-35 #orti:-34 #orto:40 #oser:62 #oses:47 #osit:-43
#ossi:-57 #osta:-139 #osto:54 #otar:27 #ough:63 #ould:128 #ound:42 #ount:28 #oupl:43 #ours:36 #ourt:-26 #outt:31
#oven:-33 #over:52 #ovid:59 #owed:48 #ower:58 #paci:-31 #paga:-43 #pago:-40 #para:48 #pare:-31 #paro:37 #parr:-33
#pasa:-97 #paso:68 #pass:-36 #past:-56 #peci:-28 #pena:-27 #pend:52 #pens:-27 #peor:-36 #pera:-37 #perd:49 #pero:39
#phon:-27 #pick:72 #pidi:50 #pier:31 #ping:75 #piso:35 #plac:-36 #plan:25 #plea:26 #poco:-44 #pode:-28 #podr:-35
#pone:-34 #pool:40 #pora:-29 #porq:-25 #poss:-31 #ppen:-29 #pper:51 #prec:30 #pres:-53 #prob:28 #pron:31 #prov:61
#pued:-102 #push:-30 #putt:-37 #quea:-45 #qued:107 #quem:-28 #quic:105 #quie:-33 #quit:53 #quot:52 #rada:30 #rade:-25
#rado:-29 #rame:53 #ranc:-37 #rand:-58 #rang:43 #rant:-100 #rapi:86 #raro:-27 #rata:27 #rate:-30 #rati:-43 #rato:181
#rcar:-31 #rdad:89 #rdan:127 #rday:25 #rden:70 #rder:94 #reac:-43 #read:57 #reak:78 #real:35 #reco:42 #rega:89
#regr:76 #rent:-36 #repa:32 #resa:80 #rese:-35 #ress:-46 #rest:-28 #reve:25 #rhea:25 #rian:41 #rida:-34 #ridg:26
#ried:-25 #righ:-38 #ring:41 #rive:-57 #rked:-53 #rlie:-53 #rmed:43 #rmin:109 #rnar:55 #rnig:113 #rnin:54 #rnoo:-62
#road:-25 #robl:27 #roll:55 #roma:37 #ront:81 #rops:-26 #rose:62 #rota:40 #roun:47 #rovi:63 #rpoo:40 #rran:-70
#rrie:-27 #rsea:38 #rson:-33 #rsta:29 #rtin:-45 #ruck:-28 #runs:40 #rvic:73 #rwar:-25 #saca:93 #sada:45 #sado:-53
#sala:-60 #sald:27 #sale:52 #salg:99 #sali:42 #sari:-25 #satu:27 #sche:-28 #scho:38 #scog:-49 #scoo:-29 #scue:-38
#seas:62 #seat:-27 #seco:-39 #segu:-28 #sela:61 #sema:-48 #senl:-28 #serv:72 #shal:40 #shar:40 #shed:73 #shes:78
#ship:32 #shor:44 #shot:-28 #shou:59 #show:112 #sibl:-31 #side:66 #sign:-30 #sing:-62 #sint:-26 #sion:28 #slee:57
#smis:26 #snea:28 #soon:-56 #spec:-37 #sper:53 #sque:-33 #ssib:-31 #ssin:-57 #stan:-54 #star:87 #stay:57 #ster:-29
#stic:54 #stoy:-45 #stra:-34 #sual:115 #sube:-30 #subi:-32 #supp:38 #swap:34 #swin:-42 #take:133 #talk:60 #tamb:40
#tand:-26 #tara:63 #tard:209 #tari:25 #tell:-56 #tend:35 #tene:38 #tent:58 #tere:-32 #teri:-61 #term:109 #tern:-62
#teti:-26 #than:51 #ther:-47 #thes:-107 #they:38 #thin:77 #thir:-32 #this:-30 #thos:44 #thou:-54 #tico:-27 #tiem:99
#till:48 #time:171 #tina:-50 #toca:-53 #toda:64 #toma:196 #tonc:-30 #took:-81 #towe:48 #trab:36 #trac:-58 #trad:52
#trai:-29 #tral:-31 #tras:-30 #treg:115 #tros:-34 #truc:-44 #ttin:44 #ttle:-47 #turd:27 #turn:128 #twen:-26 #type:37
#uali:-34 #uall:68 #uant:146 #uart:-28 #uatr:75 #ucho:94 #ucks:-26 #ueco:43 #uede:-80 #uedo:57 #uego:-34 #uela:-59
#uele:-26 #uelt:35 #uema:-26 #uenm:26 #ueno:-35 #uent:-66 #uerd:-37 #uero:43 #uert:-64 #uerz:-39 #uess:-28 #uest:-38
#uick:105 #uita:66 #uled:-28 #ulel:47 #ulin:25 #unch:-45 #undo:-26 #undr:27 #unes:28 #unle:39 #unos:54 #unta:-33
#uote:52 #uple:43 #upon:-32 #uppe:57 #urda:27 #urna:55 #urse:34 #usua:150 #utch:32 #utom:-42 #utos:-30 #utta:31
#utti:37 #vaca:31 #vaci:-35 #varl:-29 #vemo:31 #vend:-34 #veni:-35 #vera:-27 #verd:-67 #verh:25 #vern:113 #very:-26
#vete:-28 #vice:37 #vici:36 #vida:-66 #vide:43 #vien:74 #view:33 #ving:-26 #visi:-29 #vola:74 #vuel:34 #wait:-56
#warr:-36 #wedd:30 #week:36 #went:-26 #what:-82 #when:158 #whic:-51 #whil:62 #whol:119 #will:146 #wind:26 #wing:-42
#wipe:28 #wise:125 #wont:-27 #word:-42 #work:-68 #worn:-27 #woul:86 #xtra:-25 #your:-77 #ythi:-43 #zero:-40
%again_later:76 %again_later%bad:-28 %again_later%bring:-43 %again_later%busy:50 %again_later%car_part:-39
%again_later%elsewhere:-49 %again_later%family:-32 %again_later%how_long:-92 %again_later%leave_me:34
%again_later%meaning:-41 %again_later%message:-31 %again_later%money:176 %again_later%noise:-53
%again_later%on_way:-39 %again_later%opening:63 %again_later%pay_day:-51 %again_later%phone:-49
%again_later%question:37 %again_later%refuse:-50 %again_later%shake:-41 %again_later%smoke_smell:-38
%again_later%who:-32 %agree:92 %agree%bad:-84 %agree%bring:30 %agree%busy:58 %agree%call_off:55 %agree%car:-32
%agree%do_it:143 %agree%doubt:-49 %agree%fails:-62 %agree%family:-58 %agree%gone_car:-96 %agree%how_long:48
%agree%leak:-28 %agree%money:69 %agree%on_way:25 %agree%phone:-42 %agree%place:46 %agree%question:-150
%agree%staff:44 %agree%start_again:43 %away:64 %away%busy:30 %away%car_part:-46 %away%do_it:-36 %away%fails:63
%away%family:-41 %away%how_long:30 %away%leave_me:37 %away%noise:88 %away%on_way:-52 %away%phone:-28 %away%place:-39
%away%smoke_smell:30 %away%staff:-27 %away%start_again:-40 %bad:-64 %bad%how_long:33 %bring%busy:-47 %bring%car:-32
%bring%fails:38 %bring%family:-41 %bring%how_long:30 %bring%leave_me:-65 %bring%money:-64 %bring%odometer:-43
%bring%phone:31 %bring%shift_it:27 %bring%staff:-44 %bring%wrong_one:-29 %busy:55 %busy%call_off:89 %busy%car:46
%busy%do_it:-41 %busy%how_long:-51 %busy%leave_me:43 %busy%money:115 %busy%noise:28 %busy%opening:59
%busy%question:-42 %busy%refuse:25 %busy%season:26 %busy%shift_it:45 %busy%start_again:-86 %call_off:64
%call_off%car:-27 %call_off%car_part:-44 %call_off%doubt:73 %call_off%family:-49 %call_off%how_long:-44
%call_off%leave_me:32 %call_off%lift:85 %call_off%machine:-44 %call_off%money:52 %call_off%noise:-35
%call_off%on_way:66 %call_off%place:27 %call_off%question:27 %call_off%shift_it:-27 %car:35 %car%do_it:71
%car%fails:56 %car%family:-34 %car%how_long:67 %car%money:137 %car%question:122 %car%shift_it:-77
%car%start_again:-26 %car_part:-34 %car_part%fails:-37 %car_part%how_long:44 %car_part%leave_me:63
%car_part%machine:27 %car_part%money:68 %car_part%on_way:-41 %car_part%opening:-30 %car_part%phone:-30
%car_part%place:-46 %car_part%refuse:-25 %car_part%wrong_one:30 %do_it%family:-76 %do_it%gone_car:87
%do_it%how_long:28 %do_it%leave_me:58 %do_it%lift:31 %do_it%machine:29 %do_it%odometer:31 %do_it%opening:54
%do_it%place:-32 %do_it%question:64 %do_it%refuse:32 %do_it%season:-44 %do_it%shift_it:44 %do_it%staff:121
%do_it%start_again:68 %do_it%wrong_one:-69 %doubt:66 %doubt%how_long:39 %doubt%message:-32 %doubt%money:37
%doubt%on_way:28 %doubt%phone:-32 %doubt%place:-58 %doubt%question:-30 %doubt%refuse:72 %doubt%season:-25
%doubt%start_again:45 %elsewhere%gone_car:-54 %elsewhere%how_long:29 %elsewhere%leave_me:26 %elsewhere%lift:-34
%elsewhere%odometer:27 %elsewhere%on_way:37 %elsewhere%phone:37 %elsewhere%place:27 %elsewhere%refuse:28
%elsewhere%who:27 %elsewhere%wrong_one:-53 %fails:-36 %fails%gone_car:35 %fails%how_long:-57 %fails%lift:-33
%fails%money:66 %fails%noise:-30 %fails%on_way:108 %fails%opening:62 %fails%place:-29 %fails%question:-36
%fails%smoke_smell:-34 %family:-28 %family%how_long:-27 %family%lift:26 %family%opening:-39 %gone_car%how_long:25
%gone_car%leave_me:48 %gone_car%money:49 %gone_car%odometer:72 %gone_car%on_way:62 %gone_car%opening:48
%gone_car%question:109 %gone_car%refuse:-46 %how_long:442 %how_long%leak:-30 %how_long%leave_me:84 %how_long%lift:-35
%how_long%message:-40 %how_long%money:215 %how_long%odometer:51 %how_long%on_way:36 %how_long%opening:-90
%how_long%pay_day:-27 %how_long%phone:-49 %how_long%place:-26 %how_long%question:192 %how_long%refuse:90
%how_long%season:-43 %how_long%shift_it:-84 %how_long%smoke_smell:40 %how_long%start_again:74 %how_long%who:-56
%leak:-45 %leak%odometer:-28 %leak%place:-28 %leak%refuse:-29 %leave_me:82 %leave_me%money:-26 %leave_me%noise:32
%leave_me%on_way:-36 %leave_me%opening:30 %leave_me%staff:50 %leave_me%wrong_one:25 %lift:69 %lift%meaning:-32
%lift%money:131 %lift%on_way:-72 %lift%opening:-99 %lift%pay_day:-41 %lift%question:140 %lift%refuse:-62
%lift%shift_it:54 %lift%who:-51 %machine:-61 %machine%phone:-45 %machine%question:26 %machine%refuse:35
%machine%staff:-50 %meaning:-138 %meaning%question:-49 %message:-56 %message%question:-57 %message%shift_it:-34
%money:-107 %money%odometer:92 %money%on_way:127 %money%opening:47 %money%pay_day:-93 %money%place:-30
%money%question:-56 %money%refuse:167 %money%smoke_smell:-29 %money%staff:-41 %noise%opening:38
%noise%start_again:-30 %odometer:45 %odometer%pay_day:31 %odometer%place:-51 %odometer%refuse:-50 %odometer%season:32
%odometer%shift_it:32 %odometer%staff:65 %odometer%wrong_one:34 %on_way:31 %on_way%pay_day:32 %on_way%refuse:-84
%on_way%shift_it:33 %on_way%smoke_smell:-28 %on_way%staff:-51 %on_way%start_again:39 %opening:-51 %opening%place:27
%opening%question:-114 %opening%refuse:43 %opening%shift_it:-39 %opening%start_again:86 %opening%wrong_one:61
%pay_day:-56 %pay_day%season:50 %phone%shift_it:-38 %phone%staff:-25 %place%question:-51 %place%shift_it:-25
%place%smoke_smell:35 %place%start_again:-63 %place%thanks:29 %question:127 %question%shake:-32 %question%shift_it:76
%question%staff:-71 %question%start_again:71 %question%thanks:27 %question%who:-96 %question%wrong_one:-77
%refuse:-41 %refuse%season:34 %refuse%start_again:40 %refuse%who:-28 %refuse%wrong_one:34 %season%wrong_one:32
%shake:-28 %shift_it:-33 %shift_it%staff:73 %shift_it%start_again:-51 %smoke_smell:-57 %staff%wrong_one:-41
%start_again%thanks:38 %thanks:-36 %who:-85 %who%wrong_one:-38 %wrong_one:-51 @?:269 @after_visit:-159 @car:-40
@confirm_eta:52 @confirm_stop:-48 @nothing:30 @odometer:-56 ^_a:-37 ^_afternoon:-28 ^_ahi:-29 ^_ahorita:-46 ^_al:-52
^_all:-57 ^_am:66 ^_antes:-67 ^_are:62 ^_back:86 ^_before:-70 ^_bring:71 ^_cada:-25 ^_can:30 ^_como:-40 ^_con:-92
^_confirmed:33 ^_cost:76 ^_cuando:-34 ^_cuantos:63 ^_de:58 ^_depende:48 ^_did:45 ^_do:118 ^_done:-50 ^_dont:-29
^_el:39 ^_en:-50 ^_enough:-78 ^_entre:-27 ^_es:66 ^_esta:57 ^_eta:125 ^_fri:40 ^_going:-72 ^_gracias:39 ^_half:-60
^_have:-35 ^_hours:-207 ^_how:-113 ^_hoy:-69 ^_i:-53 ^_id:-26 ^_if:35 ^_ill:-66 ^_im:-81 ^_in:50 ^_it:-68 ^_joven:-33
^_jueves:26 ^_la:84 ^_las:-29 ^_last:-44 ^_listo:-28 ^_llamenme:27 ^_lunes:49 ^_martes:38 ^_maybe:-34 ^_me:42
^_mi:-49 ^_mnn:-29 ^_monday:28 ^_move:-54 ^_no:-47 ^_noon:75 ^_not:-36 ^_o:-42 ^_ok:97 ^_para:94 ^_pasela:63
^_perfecto:27 ^_por:-30 ^_precio:55 ^_price:69 ^_puede:-33 ^_push:-28 ^_quick:-33 ^_quote:54 ^_salgo:33 ^_salir:-35
^_sat:54 ^_si:-150 ^_so:81 ^_something:-33 ^_sometime:-28 ^_still:-28 ^_stuck:-33 ^_sunday:37 ^_te:82 ^_that:-52
^_the:-29 ^_tienen:-41 ^_time:172 ^_una:-26 ^_va:77 ^_wait:-55 ^_what:-40 ^_whens:45 ^_which:-58 ^_why:-58 ^_will:83
^_would:53 ^_y:-66 ^_ya:-30 ^_yes:45 ^_yo:-29 ^_you:-74 a:79 a__a:105 a__ahi:70 a__alla:48 a__and:46 a__at:59
a__cuando:-26 a__cuanto:96 a__de:31 a__en:-38 a__for:-79 a__gente:-26 a__hora:34 a__horas:-25 a__hour:77 a__job:43
a__la:50 a__like:56 a__lo:-57 a__of:-68 a__off:83 a__one:45 a__or:107 a__para:87 a__que:-32 a__si:-30 a__tardar:-69
a__tarde:38 a__time:-73 a__to:-32 a__what:-34 a__y:48 a_alguien:34 a_big:30 a_car:-31 a_coffee:59 a_como:40
a_costar:-28 a_couple:43 a_dar:-44 a_day:-31 a_esa:-69 a_estar:123 a_half:-41 a_ir:44 a_la:-44 a_las:31 a_little:-27
a_llevar:55 a_long:55 a_lunch:59 a_mas:-69 a_mechanic:-26 a_mi:-45 a_nail:35 a_no:-31 a_person:-30 a_poner:-36
a_problem:42 a_que:107 a_quedar:48 a_rotation:26 a_salir:40 a_tener:38 a_tire:27 a_two:34 a_ver:-80 about_how:61
abren:-48 abren_$:-58 acaban:58 acabo:-32 acuerdo:-26 after__season:26 after_lunch:-30 afternoon:-56 ahi_$:120
ahi__a:-36 ahi__espero:-27 ahi__las:-28 ahi_a:-28 ahi_en:28 ahi_estare:-25 ahi_sentado:40 ahi_voy:-51 ahora__en:-29
ahora_cuanto:51 ahorita_no:-44 al:-70 al__a:-32 al__dia:-29 al__el:-30 al_medio:-27 al_mediodia:-36 al_otro:43
al_rato:-82 alcanzo:40 alcanzo_$:-56 alcanzo_a:115 algo:-47 alguien:32 alguien_por:34 algun:-25 alignment:28
alineacion:30 alineacion_$:80 all:111 all__have:27 all__thing:25 all_day:128 alla:27 alla_$:-31 almost:45 already:-29
am:136 am__going:54 am__i:48 am_i:175 an:143 an__and:-32 an__change:32 an__day:117 an_all:120 an_oil:32 and:112
and__am:-36 and__i:42 and__it:29 and__many:36 and__that:-33 and__will:-52 and__would:39 and_a:-56 and_how:45
and_i:-59 and_id:26 and_is:78 and_it:-51 and_out:78 and_still:29 and_wait:-81 and_we:-35 and_will:51 anda:-45
ando:-26 ando_en:-28 antes:70 antes__las:89 antes__que:27 antes_de:92 antes_del:40 any:-65 any__after:-46 any_day:-51
any_idea:77 any_time:-71 anything:-43 anything_$:-29 apago:-32 are__from:34 are__talking:67 are_they:67 are_we:42
arm:-63 arm_$:-31 as:-92 as_i:-50 asi:-37 asi_lo:61 aside:41 at:123 at_$:-56 at__i:42 at__is:112 at__my:34 at__the:34
at__time:-51 at_am:50 at_my:33 at_noon:38 at_on:37 at_stop:46 at_the:-30 at_this:-54 at_what:68 at_work:-39
at_would:71 aun:95 away:-39 away_$:-36 back:48 back_$:45 back__hour:-36 back_an:-38 back_by:33 back_out:-30
back_to:-28 bald:-27 bank:44 basta:82 basta_$:82 bateria:-53 be:93 be_$:-138 be__a:-26 be__all:109 be__and:27
be__at:-96 be__by:52 be__day:38 be__it:89 be__that:39 be__the:65 be__there:65 be__to:-48 be_a:-67 be_back:49
be_done:144 be_finished:26 be_out:132 be_ready:147 be_stuck:77 be_the:-32 be_there:26 beat:-41 beat__to:-27
beat_you:-27 been:-99 been_a:-26 before:-28 before__have:73 before__pick:-36 before_it:-205 before_me:50 before_my:35
before_the:53 bien:-48 bien_$:-62 bill:-27 bomba:27 bomba_de:27 book:80 booked:-31 both:-39 both_days:-31 brake:-28
brakes:50 break:93 break_down:-58 bring:54 bring__in:-27 bring_it:-43 but:-25 but__have:-25 but__is:36 but_how:34
but_what:29 by:258 by_$:31 by__time:64 by_a:-35 by_noon:124 by_the:-34 cada:-51 cae:54 caer:-47 cafe:103
call__please:27 cambia:-43 cambiaron:-26 cambie:-31 came:51 came__the:37 can__be:85 can__call:40 can__do:55
can__drop:-35 can__get:83 can__pick:57 can__there:-33 can__wait:-58 can_be:-33 can_i:-34 can_somebody:40 can_you:152
cant__the:28 car:-28 car_$:32 cards:-27 cards_$:-27 carpool:40 carro_$:104 carro__para:-25 carro__que:29 carro_a:29
cars:-38 chance:42 chance_de:64 change:-50 change_my:-46 charge__the:-25 choose:-31 cien_$:-33 cierran:-53 cita:-42
cita_$:-31 claro__si:71 claro_el:-28 clear:80 close:25 close_$:46 clutch:32 coffee:44 como__las:-30 como__me:84
como__mi:26 como__que:61 como__se:42 como_a:65 como_cuanto:171 como_la:65 como_saben:-28 con_cuanto:-27 con_la:-57
con_los:51 con_un:28 con_una:40 confirmed:43 confirmo:-25 cool:46 corto:40 cosa:28 cosa_de:53 cost:121 cost_$:-103
cost_and:61 cost_me:-28 costar:-28 costo:54 costo_y:66 could__do:-33 could__it:-46 could_be:-48 could_do:28
could_i:53 could_it:-32 could_you:63 couple:43 course:34 cual:-51 cual__es:-30 cual_es:-30 cuando__de:-36
cuando__la:-51 cuando_lo:168 cuando_tenga:-37 cuando_termine:-51 cuantas:76 cuantas__son:38 cuantas_horas:92
cuanto:40 cuanto_$:-189 cuanto__a:-72 cuanto__el:-70 cuanto__es:-69 cuanto__eso:109 cuanto__la:53 cuanto__lleva:54
cuanto__lo:-62 cuanto__mas:-51 cuanto__para:-31 cuanto__que:-85 cuanto__queda:-79 cuanto__saldria:-38
cuanto__sale:-101 cuanto__tengo:107 cuanto__un:-29 cuanto__va:-25 cuanto__voy:37 cuanto__y:81 cuanto_anda:-25
cuanto_demora:37 cuanto_dura:115 cuanto_era:-57 cuanto_es:-153 cuanto_le:62 cuanto_me:83 cuanto_por:-110
cuanto_rato:125 cuanto_saldria:-60 cuanto_sale:-66 cuanto_se:219 cuanto_seria:-151 cuanto_tengo:35 cuanto_toma:109
cuanto_va:-86 cuantos:73 cuantos_dias:106 cuatro:75 cuesta:-35 cuesta_$:-55 cuesta__cuanto:66 cuesta_y:67 cupon:-25
da:68 da__de:96 da_igual:-25 da_tiempo:44 dan:44 dan_el:35 dar:-31 dawn:48 day:-94 day_$:49 day__i:-30 day_but:-31
day_i:-44 day_so:-37 day_thing:47 days:26 days_$:30 de:70 de__a:-47 de__cuanto:-33 de__de:-33 de__del:-37 de__dia:58
de__el:47 de__en:27 de__esta:25 de__hora:93 de__la:-46 de__manana:-30 de__por:107 de__que:60 de_a:-76 de_agua:27
de_cuanto:-62 de_esas:-58 de_espera:-57 de_las:41 de_lo:38 de_obra:-44 de_que:70 de_todo:77 de_un:27 de_una:44
de_verdad:-31 de_vida:-61 de_vuelta:34 deal:50 deal_$:81 debe:-40 deer:25 deja:-74 dejar_a:29 dejarlo:81 dejo:65
dejo_$:73 dejo_asi:-91 dejo_el:-46 dejo_en:66 del:-25 del__de:45 del__que:26 del__y:-27 del__ya:38 del_mediodia:52
demora:43 demora_$:28 depende:68 despues_$:45 despues__la:-32 despues__que:-28 despues_de:-56 despues_del:61 dia:177
dia_$:107 dia__a:-33 dia__la:-25 dia__me:-28 dia__que:69 dia_o:115 dia_pero:-30 dia_que:-53 dias:152 did_that:-25
did_the:36 diez:-37 digame:-31 dijo:-28 dilatan:125 do:40 do_$:-55 do__at:38 do__charge:-34 do__close:-63 do__in:58
do__keep:35 do__need:100 do__on:29 do__open:-30 do__own:-32 do__take:-56 do_i:88 do_it:44 do_monday:37 do_my:-32
does:138 does__cost:-56 does__take:106 does_it:140 does_that:119 does_the:-34 dollars:-29 donde__estan:37 done:125
done_$:-35 done__a:39 done__i:57 done__the:45 done_by:107 done_in:49 dont:-35 dont__me:-40 dos:44 dos_horas:45
down:-56 down_for:-34 drive:-67 drop:27 drop_it:-42 drop_off:74 drops:-26 due:-25 dura:95 each:-35 earlier:-53 eat:27
eat_$:27 echo:52 either:-26 el_$:88 el__a:-73 el__antes:-30 el__como:-26 el__de:-51 el__dia:144 el__en:-31 el__es:31
el__lo:62 el__o:34 el__viernes:39 el__y:-52 el_cambio:-37 el_de:-33 el_dia:46 el_freno:-35 el_mes:26 el_mismo:107
el_momento:48 el_sabado:33 el_segundo:32 el_servicio:40 el_total:-27 el_trabajo:80 el_viernes:-70 eleven:26
eleven_$:53 en:71 en__de:35 en__hora:-54 en__manana:37 en__me:-40 en__meses:33 en__momento:47 en__que:109 en__rato:39
en__tarde:-31 en__tiempo:61 en_cuanto:-209 en_enero:-40 en_lo:109 en_media:-26 en_mi:53 en_pie:26 en_que:58 en_una:52
en_unos:27 encuentro:-49 end:-58 end_of:-40 enero:40 enero_$:79 enough:77 entonces:-30 entrada:80 entre:-44
entre_y:-31 entregan:92 entregan_$:38 entregan__mismo:44 entro:82 era:-119 era_$:-49 era_lo:-60 es:152 es_$:-87
es__de:56 es__el:78 es__entrada:62 es__mismo:-34 es__o:67 es__que:-83 es__se:30 es__si:-39 es__un:25 es__ya:-35
es_cosa:53 es_de:209 es_el:-39 es_en:47 es_eso:-72 es_gratis:-25 es_la:-91 es_lo:-56 es_malo:-53 es_mi:-27
es_necesario:-25 es_que:63 es_rapidito:84 es_rapido:67 es_tardado:109 es_una:-46 es_y:-28 esa:-49 esa__ya:36
esa_hora:-60 esas:-71 escoger:-50 escuela:-38 ese:-29 ese_dia:-71 eso:36 eso__es:34 eso__lo:-36 eso_cuanto:-40
eso_del:29 eso_se:90 eso_y:-26 eso_ya:-28 especial:-28 espera:-62 espera_$:-45 espero:92 espero_$:97 esta:-37
esta_$:63 esta__la:-45 esta_semana:-45 esta_vez:72 estan:-53 estar:135 estaria:135 estaria_$:102 estaria_listo:83
estoy:-45 estoy_$:-27 eta:125 eta_$:52 every:-26 every__i:-25 every_morning:35 every_time:-36 extra:-25 falta:113
falta_$:150 far:26 far__you:34 far_are:34 fast:87 figure_$:25 fila:45 find:27 fine__i:56 finish:95 finished:73
finished_$:80 five:47 fix:33 flickers:33 flies:-33 flight:26 flush:30 for:120 for_$:63 for__brakes:74 for__tires:-50
for__to:33 for_again:-62 for_all:-56 for_the:47 for_today:-26 for_two:-34 forever:64 forever_$:73 free__my:59
free_or:-27 freno:-35 frenos:32 frenos_$:33 fri_pm:40 friday__how:-53 friday__i:-32 friday__it:49 friday__my:30
friday_same:-51 friday_works:31 fridays:-32 fridays_$:-32 fridge:25 front:50 fueron:62 fuerza:-39 fuerza_$:-39
fuga:-26 game:78 game_$:35 garantia:-58 gas:-32 gas_$:-26 gastar:-38 gente:-26 get__back:128 get__done:-72
get__from:-25 get_a:-27 get_back:-25 get_it:96 get_that:-33 get_there:-26 give:-28 go:-92 go_$:35 go_on:-49 goes:35
going__be:87 going__cost:-43 going__take:67 going_to:40 gone:-48 gone_$:-48 good:-37 got:58 got_$:-29 got_a:127
gracias__a:44 gratis:-36 gratis_o:-30 guess:-28 guy:38 guy__me:47 guys:25 guys_have:35 gym:46 hace_el:29 hacen:43
hacer:-59 hacer_$:-36 hacerlo:88 hacerlo_$:64 hago:92 hago_$:47 half:-162 half__hour:-83 half_an:-83 hand:27 hang:68
hang_on:80 happens:-29 happens__i:-29 happens_if:-29 has:-36 hasta:-73 hasta__hora:-52 hasta_que:-36 have__a:75
have__been:-41 have__done:38 have__say:-38 have__to:77 have_a:-44 have_got:46 have_it:83 have_the:-39 have_to:74
have_you:-78 hay__en:26 hay_que:74 hecho:-27 hecho_$:-27 her:32 her_$:34 here:65 here_$:66 hice:-33 hicieron_el:-31
hicieron_en:-33 hijo:-27 his:49 hit:50 hit_the:71 hole:-32 hora:-67 hora__de:-116 hora__la:-57 hora__por:65
hora__que:69 hora_abren:-64 hora_cierran:-52 hora_de:-58 hora_estan:-58 hora_que:-33 hora_ya:41 horas:42 horas_me:75
horas_son:28 hours:29 hours_$:-85 hours__it:47 hours__the:33 hours__you:26 hours_is:70 how:251 how__are:-33
how__days:33 how__does:130 how__for:65 how__hours:169 how__is:-64 how__longer:90 how__of:123 how__should:-35
how__the:33 how__time:158 how__times:-39 how__to:42 how__will:-42 how__would:-92 how_about:-68 how_do:-35
how_does:-31 how_far:34 how_long:175 how_longs:69 how_many:102 how_much:-42 hoy:35 hoy__la:-37 hoy_en:50 hoy_mismo:85
huele:-26 huele_a:-26 hundred:-28 i:79 i__a:31 i__an:67 i__at:109 i__be:-45 i__bring:-29 i__by:62 i__can:27
i__days:-39 i__for:-31 i__getting:34 i__got:46 i__it:186 i__leave:-47 i__like:-34 i__my:47 i__on:-55 i__out:69
i__something:35 i__there:68 i__wait:-30 i_be:101 i_booked:-31 i_bring:-40 i_came:66 i_can:-52 i_changed:-29
i_could:-32 i_drop:-35 i_get:71 i_go:-67 i_going:54 i_guess:-26 i_have:40 i_know:-49 i_make:142 i_miss:123 i_need:-44
i_owe:26 i_plan:40 i_shall:-33 i_should:-34 i_take:-30 i_will:-85 i_work:32 i_would:-52 iba:-36 iba_a:-36 id__a:-42
id__it:104 id_like:-46 id_need:73 idea:78 if:42 if_i:50 if_im:39 if_it:42 if_you:-64 igual:59 ill:-87 ill__by:-42
ill__there:33 ill_swing:-42 ill_wait:-25 im:37 im__from:36 im__in:32 im__to:-43 im_back:47 im_going:-43 im_there:28
in__an:70 in__hour:-33 in__it:42 in__new:32 in__out:78 in_an:-33 in_and:87 in_that:25 instead_of:39 interstate:28
ir:48 ir_$:-42 ir__mi:48 is:131 is__a:68 is__an:85 is__car:-49 is__enough:80 is__for:-34 is__going:57 is__hours:-32
is__how:28 is__in:36 is__is:-26 is__just:28 is__like:51 is__my:-33 is__no:-26 is__oil:38 is__on:-49 is__only:-44
is__something:80 is__the:-56 is__time:95 is__total:30 is__turnaround:34 is__under:48 is__wait:138 is_a:-41 is_an:69
is_done:-28 is_fine:55 is_in:32 is_it:152 is_mine:-25 is_that:76 is_the:99 is_tomorrow:37 is_when:-59 it:114 it_$:-76
it__a:62 it__about:46 it__all:27 it__an:-35 it__and:68 it__be:26 it__before:48 it__by:39 it__done:67 it__down:36
it__finished:69 it__i:-25 it__it:-81 it__k:-45 it__keep:-30 it__long:46 it__more:25 it__night:58 it__off:28
it__or:-80 it__over:-42 it__ready:105 it__same:41 it__that:-49 it__there:31 it__time:-25 it__today:-47 it__too:-37
it__under:-51 it__up:35 it__when:-50 it__you:-58 it_a:79 it_again:45 it_all:86 it_and:33 it_back:95 it_be:54
it_come:36 it_cost:-75 it_does:-26 it_done:35 it_for:27 it_friday:-44 it_goes:34 it_going:36 it_how:31 it_in:72
it_is:-91 it_like:46 it_need:26 it_off:-74 it_out:58 it_overnight:61 it_still:25 it_take:115 it_that:-27 it_the:36
it_there:-37 it_till:-31 it_to:-35 it_took:-29 it_under:59 it_wait:-70 it_when:-30 job:153 joven:-33 jueves_$:26
jueves__la:27 jueves__lo:-36 jueves_en:27 jueves_pero:-36 june__it:28 junta:32 juntar:-28 just_a:28 just_the:-31
k:-26 k_$:-44 k_service:31 kinda:48 knock:38 know_how:68 know_the:-25 la:65 la_$:25 la__ahi:41 la__antes:34
la__como:-31 la__de:-104 la__del:-25 la__esta:55 la__hora:-43 la__para:43 la__por:-56 la__se:-40 la__si:52 la__vez:57
la_alineacion:66 la_cita:-35 la_escuela:-30 la_garantia:-58 la_hago:55 la_hora:-97 la_llave:-35 la_manana:127
la_mano:-44 la_nina:34 la_noche:30 la_pieza:61 la_que:-32 la_tarde:39 la_temporada:-29 la_transmision:44 la_ultima:50
la_van:37 labor:-32 lake:-25 largo:80 las:47 las_$:89 las__a:31 las__hay:-27 las__me:79 las__media:-41 las__no:70
las__para:74 las__tengo:-35 las__y:-32 las_a:-61 las_el:-40 las_horas:-30 las_si:28 last:-104 last_time:-115 late:-85
later_one:32 later_time:-55 le:-85 le_falta:31 lease:-39 least:29 leave_me:-27 left:-37 left_$:-33 les:-113
lets__it:-32 lets_get:-26 libre:-50 libre_$:-50 lift:35 light:30 light__at:33 light_flickers:33 like:68 like_$:51
like_a:58 like_that:102 listo:48 little:-27 little_$:-27 llamenme__me:52 llamenme_y:34 llave:-35 llega:30 llegar_$:26
llegar_a:-42 llego_a:26 llego_en:-36 llego_tarde:61 lleva:89 lleva_$:27 llevar:-45 llevarlo:-29 lleven:25 llevo_$:-28
llevo_a:37 llevo_el:-47 lo:212 lo__a:-53 lo__ahi:25 lo__asi:-91 lo__de:52 lo__en:69 lo__hoy:83 lo__lo:-27 lo__me:44
lo__que:-29 lo__y:37 lo__ya:-52 lo_cambie:-29 lo_dan:71 lo_dejo:76 lo_entregan:69 lo_espero:40 lo_hacen:72
lo_hice:-33 lo_hicieron:-42 lo_llevo:-31 lo_mio:-42 lo_mismo:-80 lo_puedo:64 lo_que:52 lo_tienen:159 lo_voy:-27
lonche:35 long:77 long_$:106 long__i:-122 long__it:-131 long__you:-36 long_and:68 long_as:-40 long_do:108
long_does:37 long_for:70 long_is:37 long_job:31 long_should:28 long_will:35 longer:119 longer_$:103 longs:69
looking_at:-59 los__que:41 los_nenes:-27 low:30 lube:-48 luego:-31 lunch:-40 lunch_$:44 lunch__is:-51 lunch_hour:-42
lunes:28 lunes_$:-28 lunes__cuanto:29 lunes__de:31 lunes__las:-41 lunes__martes:-25 lunes_en:27 lunes_o:-25
lunes_pero:49 make:48 make__to:-69 make_my:55 mall_$:31 malo:-53 manana_$:-70 manana__del:46 manana__falta:-28
manana__me:25 manana_a:-43 manana_de:-28 manana_despues:44 manana_en:45 manana_puedo:-27 mando:29 mano:-44
mano__obra:-44 mano_de:-44 many:101 many__do:-39 many_days:33 many_hours:173 many_times:-39 marcar:-31 marquenme:26
martes_a:-29 martes_despues:33 mas:-73 mas__el:-33 mas__si:28 mas_tardar:-69 mas_tarde:-69 may:-26 maybe_in:-26
me_$:-34 me__a:-57 me__ahi:78 me__bien:54 me__con:38 me__cuanto:-42 me__dan:90 me__dos:40 me__el:-50 me__en:-31
me__entregan:55 me__hicieron:-39 me__igual:-35 me__la:-43 me__lo:-44 me__marcar:-31 me__para:-25 me__precio:46
me__sin:64 me__tiempo:44 me__to:68 me__todo:27 me__two:-27 me__un:52 me__una:-27 me__want:27 me__y:32 me_back:-37
me_cobran:34 me_da:74 me_dice:34 me_dijo:-28 me_hace:-46 me_hicieron:37 me_how:-32 me_in:-35 me_la:44 me_lo:132
me_please:26 me_puede:-31 me_queda:-54 me_quedo:44 me_saldria:-38 me_sale:-72 me_tengo:78 me_tienen:50 me_toca:-43
me_up:-25 me_va:-76 me_voy:110 mechanic:-26 mechanic_$:-26 media_$:-26 media_hora:76 mediodia:43 mediodia_$:52
menos_cuanto:-44 mero:114 mero_estan:37 mes:27 mes__entra:26 mes_que:26 metal_$:-26 metal__metal:-26 metal_on:-26
meter:68 meto:49 mi_$:34 mi__de:91 mi__me:26 mi__se:-25 mi_break:120 mi_hijo:-27 mi_hora:-35 mi_lonche:39 mi_nina:38
miercoles_me:25 miles:-40 miles__i:-40 milimetros:-34 millas:-33 min:68 mine:-28 mine_$:-26 minute:41 minutes_$:34
minutos:-30 mio:-40 mio_$:-41 mis:68 mismo:61 mismo__de:-27 mismo__pero:-30 mismo__que:-38 mismo_dia:159
mismo_que:-50 miss:93 mm:-33 mnn:-29 momento:48 monday_$:-70 monday__be:-32 monday__what:68 monday_at:35 mondays:38
money:31 months:-29 more:-70 more_minutes:-31 more_than:47 mornin:53 morning_$:40 morning_for:-37 move:-59
move__up:-54 move_it:-54 much:-46 much_$:-105 much__i:-145 much__it:-130 much__my:138 much__the:-51 much_and:-36
much_is:-71 much_longer:90 much_of:138 much_should:-60 much_time:158 much_will:-62 much_would:-138 mucho:93
muerte:-61 must:-101 my:90 my__and:-29 my__are:36 my__back:-26 my__i:-26 my__is:64 my__no:-32 my__there:69
my__will:-40 my_lunch:-47 my_oclock:35 my_own:-32 my_shift:-47 my_son:-31 my_time:-55 my_whole:72 n:45 nada:61
nada_mas:76 nail:35 nearly:50 necesario:-25 need:31 need_$:61 need__back:-69 need__be:-55 need__bring:33 need__for:40
need__later:25 need__the:79 need_it:-41 need_that:-32 need_to:39 needed:74 needs:-33 needs_to:-28 nenes:-27 new:55
new_tires:26 new_year:32 next:-43 next_tuesday:-28 night_$:57 nina:72 nine:-55 ninos:48 ninos__las:52 ninos_a:46
no:-133 no_$:97 no__a:-38 no__cuanto:-25 no__is:29 no__las:-31 no__this:32 no__va:-44 no_a:-34 no_alcanzo:-41
no_como:-26 no_llego:51 no_me:-65 no_se:-43 nomas:28 nomas_que:37 noon:161 noon_$:-48 not:-28 not__im:37
not__this:-42 not_at:-45 not_till:37 nothing:-26 now__is:33 o:291 o__cuanto:-46 o__el:26 o__que:31 o_como:-27 o_de:33
o_el:-37 o_hay:43 o_martes:-25 o_mas:168 o_me:123 o_no:128 o_nomas:-35 o_se:42 obra:-56 oclock:32 ocupo_$:-52 of:123
of__morning:60 of__please:111 of_an:-30 of_my:161 of_the:-26 of_them:-40 of_town:26 off:-25 off_$:-33 off_at:44
off_for:26 oil:41 oil__flickers:33 oil_light:33 ok:-106 ok_$:-139 ok__a:25 ok__it:-30 on:-31 on__it:125 on__or:-31
on_a:96 on_fridays:-32 on_it:-26 on_metal:-26 on_the:27 on_your:-28 one:105 one__is:32 one__it:47 one_is:47
one_of:-26 only:-61 only__i:-36 open_$:39 open_on:-32 or:223 or__a:82 or__i:-39 or__that:-36 or_a:115 or_fri:-38
or_no:65 or_the:-28 or_what:29 otro_en:43 out:125 out_$:66 out__my:25 out__the:-80 out_by:161 out_in:-26 out_of:-48
outta:31 outta_there:31 over:-47 over_the:-39 over_there:-31 overnight:113 overnight_$:130 owe:27 own:-33 oye_y:31
pagar:-25 para:68 para__a:-85 para__lo:170 para__martes:39 para__ya:68 para_alla:-44 para_cuando:62 para_ir:-81
para_la:107 para_las:124 para_que:-30 pare:-29 pare_de:-29 paro:37 parte:28 party:-39 pasa:-71 pasada_$:-38 pasela:61
paso:68 paso_por:69 pass:-37 past:-56 peor:-36 peor_$:-36 perfecto:28 pero:-53 pero__antes:51 pero__me:31
pero__por:-37 pero_lo:-40 person:-31 pick:75 pick__up:51 pick_it:59 pick_up:71 pie:26 pierdo:31 pieza:53 pieza_que:32
plan:30 plan_on:40 please:39 please_$:69 please__i:-31 please__me:-34 pm:102 pm_and:52 poco:-44 ponchada:32 poner:-25
por__tan:-26 por_cual:-30 por_favor:27 por_mi:78 por_que:-57 por_una:-55 porque:-25 possible:-31 possible_$:-30
precio:38 precio_y:110 price_and:59 primera_$:51 problem:41 problem_$:41 pronto:31 pueda:-37 pueda_$:-28 puede:-70
puede_marcar:-31 puedo:37 puedo__hoy:66 puedo__martes:34 puedo__o:35 puedo_el:91 puedo_ir:-25 puedo_llegar:-38
puedo_llevar:-38 puedo_ver:45 pues_ya:-30 push:-30 push__back:-30 push_it:-30 put:-54 put__off:-28 putting:-37
que__abren:-64 que__al:54 que__cierran:-53 que__con:33 que__de:-35 que__el:-54 que__era:-48 que__eso:-71
que__estan:-66 que__la:45 que__lo:34 que__los:-51 que__me:51 que__para:-37 que__por:62 que__puedo:-42 que__saber:44
que__sale:117 que__se:72 que_dejar:47 que_es:-70 que_esperar:41 que_hora:138 que_ir:44 que_la:-54 que_le:-85
que_llevar:-59 que_lo:-71 que_me:37 que_no:-30 que_pasa:-28 que_sea:-29 que_tan:90 que_tanto:36 que_tengo:-26
que_voy:69 queda:93 queda_$:128 quedamos:-25 quedar:75 quedo_sin:64 quick:93 quick_lube:-48 quiero:32 quote:53
ran:-26 rapidito:61 rapido:34 rapido_$:25 rate:-30 rate_$:-25 rato:201 rato_$:52 rato_me:49 reach:-43 ready:103
reciben:-30 recoger:117 recojo_a:36 rim:-34 rim_$:-34 rolling:60 rotar:27 run:34 runs:40 sabado_$:-38 sabado__a:28
sabado__es:39 sabado__las:32 sabado_si:40 saben:-31 saber:55 saber_cuanto:-36 saber_si:74 sacan:42 sala:-60
sala_de:-57 saldria:27 saldria_$:-33 sale:61 sale_$:-58 sale__las:57 sale__que:-74 sale_a:-47 sale_el:103 sale_y:58
salgo:121 salgo__la:-33 salgo__las:37 salgo_a:-28 salgo_antes:176 salida:116 same:27 same_day:164 same_hour:-45
same_time:-84 sat:-26 sat_at:60 saturday:26 saturday_$:77 saturday_hours:-57 say:-27 school:38 se:210 se__a:55
se__con:110 se__el:86 se__en:97 se__y:31 se_cambiaron:-27 se_hace:103 se_lleva:81 se_lo:-85 se_los:35 se_me:-56
se_pueda:-36 se_puede:-26 se_queda:40 se_tardan:59 se_va:48 sea:-28 see:-39 segundo:32 semana:-48 sentado:33 ser:-25
seria:-69 seria_$:54 service:37 servicio:36 set:41 set_aside:41 shall:40 shall_be:-26 sharp:48 shes:78 shift_$:-47
shifts:35 short:44 shot:-28 should:62 should__be:-32 should__plan:40 should_i:84 show:51 si:66 si_$:-34 si__a:69
si__bien:-56 si__de:46 si__en:55 si__la:-27 si__llevo:53 si__para:30 si__por:34 si__que:48 si__voy:-57 si_cuanto:-25
si_en:43 si_es:92 si_hay:-42 si_lo:81 si_me:-57 si_no:-28 si_pero:41 si_quiero:43 si_voy:103 si_y:-59 side:28
side_of:43 sign:-51 sign__up:-51 sign_me:-51 sigue__pie:26 sigue_en:26 siguen:-29 simon_el:34 sin_carro:77
sin_falta:-48 sintetico:-26 sit:-41 sit__wait:-57 sit_and:-57 sneak:28 so:-46 so__i:58 so__it:57 so_any:-43 so_i:-43
so_what:36 somebody:33 somebody_call:41 something_$:-30 something_that:-33 something_to:44 sometime:-28 son_$:28
soon:-46 st:-32 stay:57 still_$:72 still__it:28 still__the:-28 still_have:29 stop:-29 stop_$:-38 stuck__a:-29
stuck_at:-25 stuck_there:77 sube:-30 supper:57 swap:34 swap_to:38 swing:-42 swing_by:-42 take:136 take__day:61
take_all:29 take_it:-57 take_long:41 takes_$:36 takes__to:-27 talking:48 talking_$:63 tambien:40 tambien_$:-27 tan:79
tan__es:62 tan_pronto:40 tanto:26 tanto_se:72 tardado:109 tardan:97 tardar:-52 tardar_$:-56 tarde:-60 tarde_$:-53
tarde_el:-31 tarde_y:-43 tardo:34 te:72 tell:-51 tell__how:-40 tell_me:-48 temporada:-29 temprano_$:57 temprano_a:-44
tener:38 tenga:-37 tengo:57 tengo__dejar:47 tengo__el:-27 tengo__ir:44 tengo__llevar:-55 tengo_que:85 th:-46 than:71
thank:-25 thank_you:-26 thanks_for:-25 that__a:32 that__done:39 that__is:-75 that__it:27 that__when:-43 that_a:83
that_be:102 that_day:-108 that_done:-33 that_is:-61 that_service:-28 that_take:73 that_time:-45 that_truck:-49
that_works:-33 that_would:-26 the:-26 the__and:66 the__at:130 the__be:-27 the__before:34 the__day:80 the__first:-25
the__in:-27 the__is:-36 the__of:-46 the__on:-42 the__one:-31 the__out:-31 the__price:-29 the__side:36 the__the:45
the__thing:-42 the__thursday:40 the__til:28 the__what:-25 the__would:39 the__year:32 the_afternoon:-25 the_back:-28
the_bank:43 the_bill:-28 the_brakes:-25 the_car:52 the_cost:44 the_day:37 the_game:78 the_guy:52 the_hour:-33
the_interstate:28 the_lake:-25 the_lift:46 the_new:25 the_one:-31 the_only:-42 the_other:38 the_same:53 the_th:-40
the_thing:39 the_turnaround:34 the_van:33 the_wait:124 the_warranty:-28 the_whole:54 there_$:-106 there__a:-45
there__an:-33 there__is:37 there__the:45 there__to:35 there_a:-67 there_all:88 there_before:41 there_by:-47
there_for:-37 there_in:-48 there_is:-35 there_with:-29 these:-107 these_$:-85 these_days:-59 they:43 thing:95
thing_$:81 thing_or:41 think:26 think_it:26 thirty:-26 this:-30 this_$:-26 this_friday:47 this_month:32 this_time:-51
this_week:25 those:44 those_$:66 though:-41 thurs__fri:-39 thurs_or:-38 thursday__is:-30 thursday_and:-27
thursday_at:-33 thursday_works:53 tie:92 tiempo:116 tiempo_de:26 tiempo_lo:37 tiene:-37 tiene_$:-31 tienen:-46
tienen_el:28 till:26 time:252 time_$:38 time__hit:71 time__i:57 time__it:68 time__you:38 time_after:-46 time_do:71
time_for:43 time_i:-42 time_to:110 times:-39 tire:26 tire__a:35 tires_$:-49 to:40 to_$:-34 to__a:41 to__all:49
to__and:25 to__anything:-25 to__how:68 to__if:47 to__it:-55 to__like:59 to__me:-47 to__on:59 to__the:30 to__there:45
to_a:-43 to_be:30 to_come:-33 to_cost:-43 to_find:41 to_fix:47 to_get:49 to_it:61 to_know:86 to_leave:29 to_say:-39
to_take:78 to_the:-65 toca:-53 toda:97 toda_la:111 todavia:-33 todo__dia:63 todo_el:40 toma:157 tomo:44 too:-51
too_long:-53 took:-81 towed:48 town:39 town_$:32 trae:-34 transmision:31 truck:-26 truck_is:-49 turn:97 turnaround:55
turno:-27 twenty:-26 two:67 two_$:73 two_hours:50 two_oclock:-48 type:37 ultima_vez:64 un:42 un__o:-30 un__y:-42
un__ya:63 un_cambio:35 un_dia:47 un_rato:58 una:62 una__a:-25 una__de:-58 una__en:-40 una_hora:135 under_$:-107
unless:39 unless_it:43 unos:54 unos_meses:33 up:28 up_$:72 up__the:30 up_at:48 up_on:25 up_the:33 ustedes_$:25
usually:82 va:34 va__costar:-28 va__salir:-28 va_el:48 vacation:48 van:47 van__tener:46 vemos:35 vender:-27 ver:-48
ver_$:-50 ver__me:-28 verdad_$:46 vez:92 vez_$:33 vez__me:55 vida:-61 viene_el:-45 viernes__las:-26 viernes__que:-27
viernes_a:-26 viernes_me:44 voy:60 voy_por:35 vuelta_$:36 wait_$:71 wait__it:-27 wait__my:-27 wait_for:-30
wait_til:-29 waited:-70 waiting:-41 want:-33 want__know:27 wants:31 wants__know:31 wants_to:31 warranty:-36 was:-64
we:-37 we__a:-49 we__for:28 we_talking:67 wed:-26 wedding:30 weekend:35 weekend_$:59 what:-109 what__i:-71
what__if:-29 what__it:-148 what__my:60 what__that:-76 what__the:160 what__we:40 what__would:33 what__you:43
what_am:-61 what_are:59 what_does:-26 what_happens:-29 what_is:85 what_would:-61 when:33 when__back:-28 when__get:-39
when__i:301 when__it:35 when__you:-39 when_i:-163 when_school:-72 when_would:27 when_you:-29 whenever:-36 whens:162
where:-38 where_do:37 which:-51 while__do:34 while_you:39 who:-60 who__i:-42 whole:119 whole_thing:-27 why:-79
why__i:-31 will:157 will__be:83 will__have:60 will__it:-71 will__make:89 will__need:68 will__take:40 will_bring:-45
will_do:-59 will_i:199 will_that:43 will_you:86 window:29 wipers:47 wipers_$:47 wise:66 with_my:-25 wont:-27 work:-42
work_$:-45 work__on:39 work_at:39 worked:-53 works:27 worn:-27 would:93 would__a:-25 would__be:113 would__get:56
would__have:121 would__that:-35 would__to:-36 would_i:191 would_it:36 would_like:-34 would_that:63 would_the:-58
would_you:89 y:67 y__como:30 y__cuanto:-28 y__dura:25 y__el:-30 y__en:-53 y__es:-37 y__espero:-35 y__hace:30 y__la:65
y__las:43 y__lo:-35 y__para:-39 y__por:38 y__que:69 y__va:-29 y_a:100 y_ahi:-25 y_como:31 y_cuanto:90 y_donde:36
y_eso:-28 y_media:-78 y_no:-29 y_para:123 y_que:-62 y_se:-41 y_si:-56 y_tiempo:108 y_tienen:29 y_ya:64 ya__a:39
ya__el:-26 ya__listo:-39 ya__lo:-40 ya__mi:-45 ya__para:25 ya_esta:37 ya_mero:93 ya_se:-31 ya_voy:-37 yeah_$:-45
yeah__it:56 yep__it:76 yes:-35 yes__be:31 yes__friday:46 yes__i:29 yes__is:-28 yes__would:-36 yes_and:-53 yes_how:27
yes_i:-58 yes_ill:31 yo:-41 yo__el:34 yo_puedo:33 you:-29 you_$:-50 you__a:-91 you__an:-45 you__before:96 you__by:-25
you__have:25 you__i:-42 you__it:204 you__me:-50 you__my:-31 you__on:-26 you__that:35 you__there:-53 you__to:52
you_charge:-34 you_close:-46 you_do:52 you_got:-26 you_guys:25 you_have:52 you_keep:31 you_know:-32 you_need:137
you_open:-25 you_take:-68 you_the:27 you_think:27 you_to:-28 you_up:34 your:-51 yours:-27 yours_$:-27
"""
