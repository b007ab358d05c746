"""What speaks for and against `explain`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "explain"
BIAS = -171
WEIGHTS = """\
#abaj:-66 #aban:52 #aben:44 #aber:41 #abin:107 #abla:42 #able:-46 #abor:-91 #abus:-53 #acab:-43 #acac:43 #acei:-60
#acer:74 #actl:91 #adel:-56 #aden:-39 #adit:50 #ados:73 #adua:52 #afec:52 #ages:-71 #agua:142 #aili:-38 #ails:154
#aine:-39 #ains:111 #aiti:51 #ajan:-50 #alan:-62 #ales:150 #algo:127 #algu:-48 #alie:-37 #alla:51 #alle:-160 #ally:95
#alwa:-39 #ambi:39 #amie:-40 #amil:71 #amos:-39 #ance:-108 #anda:91 #ando:-38 #ands:105 #anej:97 #ange:47 #angi:37
#anol:52 #anot:41 #ansf:50 #anta:119 #anto:46 #anua:95 #anyh:50 #anyw:70 #apag:-70 #aper:84 #apid:-52 #appe:91
#apto:184 #arag:-50 #arca:-113 #arda:-41 #arde:-39 #ared:48 #arel:-42 #argi:-46 #ario:48 #arou:-42 #arra:-95 #arth:49
#arzo:84 #asar:57 #ashi:-52 #ason:49 #asta:155 #asur:58 #ated:-66 #ater:-72 #athe:-69 #atin:58 #atis:-64 #atll:70
#ator:84 #atro:-57 #ause:75 #ayud:39 #baja:-74 #bala:-43 #bald:50 #bale:49 #band:48 #bare:-42 #befo:64 #bein:37
#belt:93 #bers:63 #betw:-46 #bian:-48 #bien:-58 #bike:-38 #bill:74 #bina:38 #blac:41 #blan:-53 #blem:62 #bler:-47
#blig:113 #blow:144 #bola:53 #bonu:63 #boot:51 #bran:-57 #brea:82 #brin:-73 #brot:-42 #buck:-42 #buil:-44 #bulb:-47
#busi:-48 #cabe:-55 #cabi:107 #cada:81 #camb:82 #card:-37 #care:49 #case:50 #caus:75 #ceit:-60 #cept:-50 #cerl:-55
#cesa:48 #cess:75 #chai:43 #chan:41 #char:-52 #chec:70 #cheq:75 #ches:-37 #choo:42 #cien:-69 #cita:56 #ckin:74
#ckup:39 #clos:-43 #cluy:91 #code:-40 #coff:-44 #coja:-41 #colo:54 #comi:86 #como:-84 #cont:100 #cosa:88 #cost:-179
#coul:90 #coup:-46 #cove:-41 #crap:-39 #crib:-44 #ctam:43 #ctio:50 #ctly:91 #cual:104 #cuan:-84 #cuat:-52 #cuen:48
#curi:-48 #daba:61 #dang:92 #dash:-41 #days:-73 #dder:52 #dead:-45 #deal:65 #debe:154 #deep:-88 #deja:-56 #dent:-54
#denv:48 #depe:-50 #deri:55 #desc:44 #dias:-78 #dice:78 #dich:-52 #dida:56 #dier:67 #dife:70 #digo:-78 #dijo:-43
#dill:-54 #dine:60 #dinn:-40 #dire:-39 #does:95 #doin:79 #dome:66 #door:-87 #down:41 #dres:-94 #driv:134 #drop:-64
#dura:223 #duri:68 #eady:-64 #eage:43 #eaki:49 #eall:104 #earl:-50 #eart:49 #easo:49 #easu:58 #eath:-43 #eavi:65
#eces:84 #ecia:-59 #ecir:80 #ecki:99 #ecla:-37 #ecom:84 #ecta:52 #ecto:-43 #edal:-48 #edid:45 #eeds:46 #eeke:38
#efon:-49 #efor:64 #efun:42 #egas:39 #egoc:-63 #egue:-70 #egui:38 #egun:50 #egur:37 #eigh:68 #eing:37 #eite:-90
#ejar:117 #eken:38 #elef:-49 #elig:73 #elle:43 #else:52 #emad:37 #emen:56 #emov:-38 #enas:41 #ence:-37 #enci:44
#enco:83 #enda:61 #ener:-39 #enev:55 #engi:43 #engo:-40 #enia:-38 #ensa:-39 #ense:59 #enta:37 #enti:41 #entr:-62
#enve:48 #epen:-56 #epla:113 #eply:-70 #epor:45 #eque:70 #erar:92 #eras:99 #erda:68 #erdi:44 #ered:-49 #eren:167
#eria:-37 #erio:79 #eros:-87 #erou:59 #erta:-60 #erte:61 #erto:-49 #erza:56 #esar:48 #esas:73 #esco:45 #escr:-44
#escu:-45 #esnt:-64 #espe:41 #essa:90 #esse:-38 #essi:52 #este:-48 #esto:-82 #eter:46 #etic:70 #etos:59 #etro:50
#etti:40 #etwe:-46 #eval:41 #even:101 #ever:52 #evis:83 #exac:62 #exit:-112 #expl:187 #exti:-50 #fail:149 #fair:70
#fall:40 #fami:71 #fect:149 #fere:57 #ffee:-44 #fica:44 #fill:69 #filt:84 #find:76 #five:50 #fixi:57 #flas:-52
#flee:-51 #flor:37 #flui:95 #flus:59 #fono:-49 #fore:55 #foto:-69 #foun:79 #four:42 #free:-117 #fuer:73 #fund:42
#gara:-51 #gast:161 #gato:37 #gave:63 #gent:90 #gero:45 #gets:89 #gett:62 #ghts:-64 #gine:41 #gnif:45 #gnor:84
#goci:-63 #gold:74 #gone:-45 #grab:-37 #gran:70 #grat:-64 #grav:83 #guan:174 #gues:86 #guir:48 #guro:57 #hace:148
#hain:43 #happ:96 #hard:-74 #harg:-40 #hari:83 #harm:131 #hatc:51 #hatl:70 #haul:52 #head:-53 #heck:43 #heel:-53
#heet:101 #hene:55 #hequ:75 #hese:41 #hice:-50 #high:52 #hing:70 #hird:-41 #hirt:67 #hist:77 #hitc:-44 #hold:132
#hors:56 #houl:54 #hour:-95 #hudd:52 #hund:-37 #hurt:43 #hybr:39 #iaja:45 #iaje:84 #iarl:95 #iaro:-40 #iban:87
#iben:-38 #icar:-63 #iced:-53 #icen:51 #icho:-55 #icin:-38 #icks:-38 #icku:39 #icos:-37 #idea:-55 #ides:43 #idin:69
#idio:125 #iene:62 #ient:42 #iere:164 #iero:-49 #ifer:70 #ific:44 #igam:65 #igan:-44 #ight:-68 #igni:45 #igno:69
#igro:74 #ildi:-44 #ilea:43 #iles:39 #ilim:80 #ilin:-38 #illi:43 #ills:63 #iltr:51 #imet:122 #imit:50 #incl:68
#inds:-38 #iner:41 #ines:-39 #inio:40 #inst:-62 #inte:37 #inve:59 #invo:125 #ippe:64 #iqui:83 #irad:68 #iran:-45
#irme:-44 #irty:68 #irve:-72 #isan:65 #isnt:43 #iste:47 #itar:43 #itch:-60 #itin:44 #itor:79 #itos:57 #ives:-46
#ivew:-41 #ixin:57 #jaja:-43 #jand:112 #jito:57 #join:76 #jueg:-53 #juli:45 #juni:71 #keep:57 #kend:38 #kick:-41
#labo:-91 #lack:41 #lado:40 #lain:37 #lama:-57 #lame:-37 #lanc:-75 #lash:-61 #last:74 #latt:51 #leag:43 #leak:-49
#leav:44 #leet:-51 #lefo:-49 #left:64 #legi:-71 #legu:-55 #lema:67 #lena:54 #less:-56 #lest:-42 #leve:-67 #lica:94
#lien:-37 #lies:41 #life:142 #ligh:-91 #ligr:74 #like:48 #lime:122 #limi:50 #line:-89 #liqu:96 #list:69 #livi:-37
#llam:-61 #llas:103 #lleg:-47 #ller:-53 #llet:-43 #llev:-52 #llow:69 #loca:-54 #lori:37 #loss:52 #love:-109 #lowe:-54
#lowi:-46 #lows:-45 #ltro:51 #luga:-61 #luid:95 #lush:59 #luye:91 #lway:-39 #mado:70 #maki:-44 #mall:-47 #malo:195
#mane:81 #mano:-86 #manu:99 #many:73 #marc:-127 #marz:84 #matt:-58 #mber:-71 #mbia:38 #mean:-67 #meas:78 #mell:-51
#mend:40 #meno:-73 #mens:-39 #mero:-63 #mete:49 #metr:52 #mien:134 #mile:74 #mili:75 #mill:38 #mily:70 #mine:74
#mise:-54 #mole:-42 #mone:-56 #moni:79 #more:52 #moth:55 #moun:52 #mpad:39 #mpan:-38 #mpon:49 #mpra:-38 #much:-92
#muev:37 #must:90 #nada:42 #ncia:49 #nclu:57 #ncon:83 #ndar:58 #near:39 #nece:132 #need:174 #nego:-63 #neja:126
#nero:51 #next:57 #nger:112 #ngin:80 #nice:68 #nifi:45 #nigh:-47 #nion:40 #nito:42 #nles:-51 #nner:-40 #nois:43
#noon:-66 #nore:84 #norm:130 #noti:-38 #nsaj:-40 #nsfe:50 #nsta:-59 #ntai:77 #ntan:67 #ntas:-104 #nten:70 #nter:47
#nths:65 #nton:56 #ntos:43 #nual:99 #numb:-71 #nume:-40 #nven:59 #nver:48 #nyho:50 #nywa:83 #oble:69 #obli:113
#obre:-67 #ocal:-39 #ocio:-63 #odom:66 #oesn:-64 #offe:-44 #oily:50 #oing:54 #oint:117 #oise:43 #oked:44 #okin:-38
#oldi:48 #oles:-50 #olor:54 #olve:71 #omba:37 #omis:-54 #ompo:49 #onen:-38 #oney:-56 #onit:44 #onte:65 #ontr:71
#onus:63 #ooke:44 #oppe:62 #oqui:63 #ored:42 #orid:37 #orio:83 #orks:-47 #orma:110 #orqu:-47 #orro:39 #orse:156
#osit:-52 #osts:-55 #otan:59 #otar:45 #othe:77 #othi:-41 #otic:-38 #otor:115 #ould:78 #ound:61 #oupo:-46 #oure:62
#ouse:-51 #ousl:-104 #over:-83 #padr:39 #paga:-53 #pano:52 #pape:56 #part:50 #pasa:179 #pase:-64 #payi:-73 #peak:45
#peci:-64 #peda:-48 #peli:74 #pend:-71 #peor:83 #pera:41 #pero:70 #pido:-52 #pini:40 #piso:-40 #plai:37 #play:107
#plea:46 #plic:87 #plie:41 #poco:62 #poin:41 #pone:114 #pong:-40 #poqu:88 #porq:-47 #ppen:110 #pper:40 #ppli:41
#ppos:38 #pref:-48 #pric:-86 #prob:79 #prom:-54 #pued:125 #puer:-49 #pues:-70 #pull:-68 #puro:42 #push:84 #quea:-96
#qued:63 #quem:64 #quic:-76 #quid:69 #quit:42 #quot:-84 #raba:-51 #rada:-70 #rade:-53 #rado:45 #rage:-50 #raia:39
#ranc:-66 #rang:-43 #rans:85 #rapi:-72 #raro:91 #rata:87 #rati:-103 #rato:-67 #rave:83 #rdem:39 #read:76 #reak:84
#real:76 #rear:74 #reas:56 #rece:-53 #redo:56 #reet:-62 #rell:43 #rely:-42 #reme:59 #remo:-38 #rent:-46 #repl:43
#repo:47 #resa:-76 #resp:-48 #ress:-52 #rest:-42 #revi:66 #rgen:108 #rgin:-46 #ribe:-38 #rice:-47 #rici:-38 #rico:-37
#ridi:49 #ried:45 #rifa:-53 #rios:-44 #ripp:50 #risk:128 #rive:66 #rivi:46 #rmal:130 #rned:-41 #robl:79 #roge:42
#romi:-54 #rong:87 #room:-44 #roso:53 #rota:116 #roth:-42 #roto:72 #rous:59 #rpor:-44 #rque:-56 #rran:-80 #rued:-43
#ruid:-44 #rumb:-81 #rush:73 #rust:-39 #rven:-39 #ryin:-45 #sabe:71 #sado:-66 #safe:99 #saje:-69 #sali:-45 #same:-57
#sari:38 #sary:71 #savi:-79 #sayi:59 #says:66 #scal:45 #scam:-106 #scar:82 #scom:64 #scra:-40 #scri:-44 #segu:160
#sema:-46 #sens:75 #sent:-60 #sera:111 #seri:49 #sfer:50 #shee:102 #shin:81 #shop:-87 #shou:54 #show:-44 #shud:52
#shut:-56 #sien:53 #sign:69 #sigo:113 #sing:83 #sirv:-72 #sits:48 #sitt:-37 #skin:61 #skip:127 #slip:-60 #smel:-51
#smok:-45 #snow:-45 #some:-43 #soon:53 #span:52 #spea:45 #spec:-37 #sper:64 #spit:-49 #spot:81 #sque:-66 #ssar:75
#ssed:-41 #ssin:82 #stad:83 #stal:-59 #star:-69 #stee:-43 #sten:-48 #step:-44 #stio:48 #stop:-51 #stra:65 #stre:-64
#stuf:71 #sube:-50 #supp:47 #tabl:-47 #taci:41 #tado:51 #tain:89 #take:-44 #tale:46 #tall:-110 #tamb:-43 #tand:-54
#tara:97 #tard:-62 #tare:49 #tarl:-46 #tate:-42 #tcha:51 #tech:73 #tell:84 #teng:-55 #tent:42 #text:-116 #than:-53
#that:113 #them:116 #thes:41 #they:195 #this:66 #thos:43 #thou:51 #tice:-38 #tien:48 #time:-79 #tion:63 #tire:66
#tita:37 #tivo:45 #toca:79 #told:-62 #toma:-55 #toni:71 #tope:-39 #tori:77 #tors:37 #town:-50 #trab:-50 #trad:-90
#tran:97 #trar:83 #tras:83 #trat:66 #trea:121 #tree:-66 #tres:-54 #trip:44 #trol:39 #ttle:47 #tuff:74 #tune:47
#twee:-46 #uand:-51 #uant:140 #uatr:-52 #ucks:-48 #udde:52 #udge:-39 #ueal:-54 #ueda:42 #uede:37 #uedo:67 #uego:-57
#uenm:53 #uent:42 #uerz:59 #uess:86 #ugar:-61 #uick:-76 #uido:63 #uien:-58 #uild:-44 #uita:53 #uito:51 #ular:49
#ulio:45 #umbe:-71 #umbo:-94 #umer:-40 #unde:-56 #unds:40 #unio:71 #unle:-51 #unta:48 #unto:40 #uote:-84 #upan:51
#upon:-46 #uppl:41 #uppo:38 #uran:170 #urge:-43 #urio:-52 #uris:54 #urne:-41 #urns:39 #usan:-152 #ushi:107 #usly:-104
#vacu:-37 #vala:41 #vale:-72 #vece:-49 #vega:40 #vent:47 #vera:115 #verd:144 #vere:-37 #verl:51 #vers:62 #vewa:-41
#viaj:129 #vida:66 #vien:37 #visa:48 #visi:73 #volv:67 #wait:71 #wall:-64 #watc:-40 #wear:39 #weat:-69 #ween:-46
#were:52 #what:220 #whee:-53 #when:-90 #whys:77 #wifi:-90 #will:90 #wing:-46 #wint:43 #wont:-51 #worr:66 #wors:99
#woul:-66 #writ:49 #wron:87 #xact:62 #xing:57 #xpli:200 #xtin:-50 #ybri:39 #yeah:-62 #year:52 #yell:50 #yhow:50
#ying:74 #yuda:39 #yway:83 #zero:-88 %again_later:84 %again_later%call_off:-81 %again_later%car_part:67
%again_later%gone_car:57 %again_later%leak:45 %again_later%lift:79 %again_later%meaning:132 %again_later%money:-71
%again_later%noise:-54 %again_later%place:-89 %again_later%season:67 %again_later%shake:65
%again_later%smoke_smell:87 %again_later%staff:-84 %again_later%thanks:-121 %agree%away:111 %agree%bring:-43
%agree%call_off:73 %agree%car:43 %agree%do_it:63 %agree%elsewhere:-48 %agree%fails:63 %agree%family:70
%agree%how_long:-82 %agree%leave_me:-121 %agree%meaning:63 %agree%money:63 %agree%on_way:-64 %agree%place:88
%agree%refuse:-56 %agree%shake:117 %agree%shift_it:159 %agree%start_again:52 %agree%who:-78 %away%bring:-51
%away%call_off:63 %away%car:78 %away%car_part:-71 %away%odometer:99 %away%on_way:76 %away%place:73 %away%refuse:-43
%away%staff:-45 %away%start_again:-78 %away%wrong_one:-49 %bad:-41 %bad%bring:46 %bad%car:-50 %bad%machine:-45
%bad%noise:-60 %bad%on_way:68 %bad%phone:69 %bad%place:131 %bad%question:110 %bad%refuse:40 %bad%shake:-46
%bad%shift_it:59 %bad%start_again:52 %bad%wrong_one:-39 %bring:-62 %bring%car:47 %bring%car_part:59 %bring%doubt:57
%bring%fails:93 %bring%family:76 %bring%meaning:38 %bring%money:-81 %bring%odometer:-64 %bring%opening:-38
%bring%pay_day:-37 %bring%place:-43 %bring%question:38 %bring%season:38 %bring%staff:54 %busy:-38 %busy%call_off:-41
%busy%car_part:-53 %busy%start_again:76 %busy%wrong_one:-88 %call_off:54 %call_off%do_it:-38 %call_off%elsewhere:75
%call_off%leave_me:-51 %call_off%lift:84 %call_off%meaning:50 %call_off%noise:69 %call_off%odometer:-132
%call_off%on_way:-39 %call_off%place:-72 %call_off%refuse:-139 %call_off%shake:92 %call_off%shift_it:47
%call_off%thanks:59 %call_off%who:-38 %car:47 %car%car_part:-68 %car%doubt:39 %car%how_long:-116 %car%leak:-38
%car%lift:-90 %car%meaning:129 %car%odometer:38 %car%pay_day:-46 %car%place:37 %car%question:97 %car%refuse:89
%car%season:37 %car%staff:52 %car_part:102 %car_part%do_it:-84 %car_part%gone_car:-140 %car_part%leave_me:-39
%car_part%machine:-45 %car_part%money:-56 %car_part%noise:-130 %car_part%odometer:93 %car_part%on_way:95
%car_part%pay_day:-54 %car_part%place:43 %car_part%question:151 %car_part%shake:-64 %car_part%shift_it:-72
%car_part%start_again:86 %car_part%thanks:-106 %car_part%who:92 %car_part%wrong_one:-94 %do_it%doubt:39
%do_it%elsewhere:-50 %do_it%leak:-56 %do_it%lift:-56 %do_it%meaning:68 %do_it%noise:-38 %do_it%odometer:-73
%do_it%question:98 %do_it%refuse:121 %do_it%staff:148 %do_it%start_again:129 %do_it%wrong_one:47 %doubt:49
%doubt%family:62 %doubt%leave_me:-41 %doubt%meaning:-40 %doubt%message:-47 %doubt%money:-38 %doubt%odometer:49
%doubt%phone:-63 %doubt%place:106 %doubt%smoke_smell:-47 %doubt%start_again:41 %doubt%wrong_one:-59 %elsewhere:-91
%elsewhere%leave_me:37 %elsewhere%money:59 %elsewhere%refuse:-98 %elsewhere%season:81 %elsewhere%shift_it:84
%elsewhere%wrong_one:44 %fails%how_long:138 %fails%meaning:74 %fails%message:-38 %fails%money:-59 %fails%odometer:37
%fails%on_way:51 %fails%pay_day:-58 %fails%question:63 %fails%shake:50 %fails%shift_it:-88 %fails%staff:38
%fails%wrong_one:52 %family%meaning:37 %family%money:-45 %family%on_way:85 %family%question:46 %family%refuse:-57
%family%wrong_one:97 %gone_car:-88 %gone_car%how_long:-38 %gone_car%money:41 %gone_car%odometer:57
%gone_car%phone:119 %gone_car%refuse:-44 %gone_car%season:-46 %how_long:-207 %how_long%lift:67 %how_long%meaning:125
%how_long%on_way:-95 %how_long%pay_day:62 %how_long%question:-41 %how_long%refuse:-60 %how_long%season:57
%how_long%staff:54 %how_long%wrong_one:-45 %leak%question:-43 %leak%start_again:44 %leave_me:-39 %leave_me%money:72
%leave_me%question:-100 %leave_me%refuse:-89 %leave_me%season:49 %leave_me%shift_it:89 %lift%meaning:74
%lift%odometer:-45 %lift%on_way:-44 %lift%pay_day:109 %lift%question:-79 %lift%refuse:110 %lift%season:163
%lift%wrong_one:-43 %machine:-60 %machine%meaning:53 %machine%money:-49 %machine%refuse:78 %machine%shake:-46
%machine%staff:-73 %machine%wrong_one:-61 %meaning:484 %meaning%message:-69 %meaning%money:-73 %meaning%noise:70
%meaning%on_way:-81 %meaning%opening:50 %meaning%phone:-73 %meaning%question:198 %meaning%refuse:100
%meaning%season:41 %meaning%staff:86 %meaning%thanks:41 %message:-96 %message%shift_it:-69 %message%wrong_one:-57
%money:-191 %money%noise:-67 %money%odometer:77 %money%place:248 %money%question:-166 %money%season:-70
%money%shift_it:-78 %money%who:-50 %noise%odometer:-48 %noise%phone:84 %noise%question:55 %noise%staff:38
%odometer%on_way:63 %odometer%refuse:59 %odometer%season:-82 %odometer%staff:-47 %odometer%who:50 %on_way:-41
%on_way%pay_day:64 %on_way%place:73 %on_way%question:69 %on_way%shift_it:-53 %on_way%wrong_one:45 %opening:-42
%opening%question:-63 %pay_day%staff:58 %phone:-141 %phone%refuse:55 %phone%shift_it:-80 %phone%staff:44
%phone%start_again:-44 %phone%who:78 %phone%wrong_one:-37 %place:-125 %place%question:-58 %place%refuse:-74
%place%season:37 %place%start_again:-55 %question:300 %question%refuse:68 %question%shake:-42 %question%shift_it:-126
%question%smoke_smell:-44 %question%staff:117 %question%start_again:94 %question%thanks:-43 %question%who:-165
%question%wrong_one:98 %refuse%shake:43 %refuse%shift_it:43 %refuse%staff:37 %refuse%start_again:-72 %refuse%who:38
%refuse%wrong_one:-52 %season:57 %season%shift_it:93 %season%smoke_smell:39 %season%staff:39 %shake%shift_it:65
%shift_it%staff:-69 %shift_it%start_again:-40 %staff:-111 %who:-101 @?:210 @after_visit:-50 @car:-90 @confirm:-60
@confirm_stop:-157 @offers:-52 @reading:-69 @time:-67 @times:-69 @walk_in:-52 ^_a:63 ^_aguanta:58 ^_ahi:48
^_alright:47 ^_am:76 ^_and:-96 ^_any:-56 ^_anything:-62 ^_are:67 ^_before:42 ^_brake:-64 ^_brakes:-95 ^_cada:43
^_cant:-72 ^_car:-61 ^_check:-45 ^_como:-124 ^_confirmado:44 ^_could:77 ^_cuando:-38 ^_cuanto:109 ^_de:133
^_depends:-50 ^_desde:-57 ^_did:-47 ^_do:75 ^_doesnt:-54 ^_donde:76 ^_driving:63 ^_entre:-39 ^_es:38 ^_esa:39
^_eso:-52 ^_esta:69 ^_estan:-49 ^_frena:49 ^_friday:54 ^_front:82 ^_get:38 ^_going:-44 ^_good:43 ^_got:-47
^_gracias:-57 ^_hacen:-40 ^_had:-49 ^_hang:41 ^_hold:-97 ^_how:-81 ^_i:-50 ^_id:54 ^_if:-107 ^_im:-73 ^_in:44
^_is:108 ^_it:-148 ^_jueves:38 ^_just:38 ^_last:-58 ^_later:-44 ^_left:51 ^_llamenme:52 ^_llevo:63 ^_lo:-127 ^_los:44
^_martes:64 ^_me:60 ^_mejor:-65 ^_nada:-52 ^_need:-82 ^_not:51 ^_ocupo:-45 ^_ok:-81 ^_pero:83 ^_please:52 ^_por:105
^_prefiero:-39 ^_puedo:147 ^_pues:-68 ^_quien:85 ^_quiero:-74 ^_red:54 ^_sat:41 ^_school:41 ^_se:69 ^_sedan:-44
^_seguro:-56 ^_should:82 ^_si:-95 ^_skip:-54 ^_sounds:57 ^_still:-40 ^_sure:-49 ^_ten:66 ^_that:-134 ^_the:41
^_those:-59 ^_thousand:38 ^_thursday:40 ^_tires:-38 ^_top:104 ^_trae:39 ^_tuesday:62 ^_turns:39 ^_viernes:-48
^_we:-54 ^_what:-166 ^_when:-42 ^_whenever:61 ^_which:79 ^_will:118 ^_would:72 ^_ya:-94 ^_yeah:-39 a:45 a_$:-135
a__about:44 a__and:-39 a__deal:54 a__en:-47 a__filter:76 a__fluid:59 a__from:-41 a__hora:43 a__how:55 a__like:-44
a__manana:42 a__me:-37 a__months:68 a__ninos:39 a__o:41 a__of:-74 a__off:-92 a__on:-41 a__or:-45 a__person:46
a__spot:42 a__thing:-61 a__to:116 a__trip:110 a__un:-53 a_battery:-68 a_big:64 a_bit:-43 a_brake:-42 a_cabin:76
a_car:37 a_como:-45 a_coupon:-39 a_day:59 a_esa:52 a_ese:-44 a_few:70 a_hacer:117 a_la:60 a_mis:43 a_new:-41
a_nice:75 a_price:72 a_quemado:37 a_quick:-41 a_rip:-97 a_road:99 a_ser:-39 a_tow:-43 a_week:-61 a_while:56
a_year:-55 about:-62 about_$:-111 about_the:70 about_what:-74 abril_$:-56 aceite:-79 actually:56 acuerdo:39
adelantar:-55 adelante_$:-44 after__you:-39 again_$:93 again__the:76 agarre:37 agua_$:-55 aguanta:157
aguanta_hasta:62 ahi_estare:49 ahi_estoy:44 ahorita__puedo:-39 al__no:41 al_carro:45 al_viernes:94 algo:151 all:101
all_$:-37 all__thing:-75 all__you:38 all_four:63 all_the:63 already_replaced:-54 already_took:40 always:-39 am:87
am__going:62 am_i:85 am_is:43 an_appointment:-75 an_hour:-88 and:85 and__how:72 and__i:93 and__it:73 and__like:48
and__long:-62 and__much:99 and__was:-51 and__what:97 and__will:-44 and__would:61 and__you:59 and_are:38 and_back:58
and_i:-44 and_is:41 and_it:-120 and_now:-53 and_tell:40 and_that:-47 and_the:-81 and_this:60 and_what:84 and_where:52
and_who:45 and_why:125 andar:89 andar_asi:52 another:40 another_$:38 antes_$:-52 antes_no:72 anyhow:50 anyhow_$:64
anything_$:99 anyway:45 anyway_$:51 appointment_$:-73 appointment__i:-56 appointment_for:78 are:88 are_$:-39
are__and:41 are__charging:-52 are__doing:102 are_on:52 are_we:121 are_you:-52 as_it:103 asi:104 asi_$:71 asi_como:44
at_$:40 at__it:62 at__speed:54 at_a:-44 at_and:-59 at_home:40 at_is:58 at_it:-37 at_that:45 at_the:-44 at_work:41
atras_$:53 axle:-49 ayer:45 ayuda:49 ayuda_$:50 b:-53 bad:-45 bad__it:39 bald:50 banda:40 barely:-42 bateria_no:-60
battery_light:-44 be:-63 be_$:-105 be__at:37 be__for:72 be__my:51 be_coming:41 be_doing:123 be_done:83 be_good:72
be_over:-53 been_there:43 before:64 before_$:-65 before__say:-59 before_it:173 before_my:40 being:37 belt:107
belt_$:65 between:-46 bien_$:69 big:84 big_deal:106 bill:82 bit:38 black:41 blue_one:-54 bomba:37 bonus:63 boot:51
brake:-41 brakes:52 brakes_$:110 brakes_feel:-46 brakes_squeal:-45 brand:-55 break:95 break_$:-86 break_down:108
bring:-66 brother:-42 btw:84 btw_$:84 bucks:-42 building:-44 bulb:-46 burning_smell:-38 but:47 but__i:45 but__is:-51
but__me:38 but_the:-49 but_what:107 by_the:-77 cabin:69 cabin_filter:63 cabina:38 cabina_$:43 cada:98 call_$:46
call_me:-38 calle:-37 called:41 cambia:39 cambiar__cita:-52 cambiaron:-40 cambie:37 came_on:-37 can:149 can__come:-82
can__drive:142 can__get:58 can__it:-85 can__make:-62 can__tell:-37 can__that:-50 can__the:-43 can__wait:206 can_a:66
can_do:-50 can_i:224 can_it:223 can_my:-42 can_text:37 can_we:-77 can_you:-70 cant__the:44 cant_make:49 car_to:-38
caro:-45 carro_$:45 carro__lo:72 carro__para:48 carro_no:-41 case:50 cause:46 chain:43 changing:40 charging:-52
checking:99 chiste:42 cien:-56 cien_$:-45 cita:51 cita_$:58 cita__el:38 cobraron:39 cobre:-39 code:-40 coffee:-44
cold_$:44 color:41 come:71 come_$:148 come__with:-54 come_to:-156 coming:41 coming__for:72 coming_in:70
coming_just:51 como:-100 como__que:134 como_cuanto:-39 como_de:41 como_esta:47 como_que:-43 como_saben:89 compadre:39
con_que:68 coolant_$:55 cosa:121 cosa_de:74 cost:-126 cost_$:-46 cost_me:-38 costs:-55 costs_$:-42 could:84
could__a:-43 could_i:-52 could_use:-43 could_you:97 coupon:-46 covered:-37 creo_que:-42 cual__el:42 cual__la:-46
cual__su:-38 cuando:-51 cuando__el:42 cuando_llegue:-39 cuando_me:78 cuantas:-74 cuanto_$:-71 cuanto__las:-58
cuanto__me:177 cuanto__que:-84 cuanto__queda:261 cuanto_dura:-47 cuanto_era:-41 cuanto_es:-46 cuanto_mas:242
cuanto_me:-97 cuanto_por:-96 cuanto_tardan:50 cuantos:43 cuatro:-52 cuenta:42 dan:-37 dangerous:86 dangerous_$:37
dar:-39 darle:57 day:-59 day_thing:-91 days:-69 de:57 de__cita:59 de__como:-98 de__el:-55 de__la:38 de__lo:64
de__me:92 de__o:77 de__que:-43 de__se:47 de__tarde:43 de_a:40 de_acuerdo:-42 de_adelante:69 de_atras:-39 de_cabina:44
de_donde:39 de_eso:-48 de_la:105 de_lado:37 de_las:-69 de_llantas:-165 de_los:38 de_mas:-38 de_que:183 de_todo:-46
de_un:-75 de_ustedes:-39 de_veras:72 de_verdad:69 de_vida:100 dead:-45 deal:111 deal_with:44 debe:166 decir:56
decir_$:69 deep:-88 dejar:79 dejarlo:-83 del:56 del_aceite:46 del_motor:-57 del_viaje:39 delante:80 demora_$:42
denver:48 depends:-50 descompone:55 desde_ayer:75 desde_que:-79 dia:-96 dia_$:-39 dia__es:57 dia__la:42 dia__que:-60
dia_de:42 dia_o:-60 dias:-78 dice_que:67 dicen:65 dicho:-52 did:55 did__find:52 did_that:-40 did_you:111 digame:65
digame_que:40 digo:-78 dijeron_una:55 dijo:-43 dinero:75 dinero_$:53 dinner:-40 direccion_$:-60 do:109 do_$:-41
do__for:-70 do__get:-46 do__go:-43 do__guys:42 do__have:55 do__it:40 do__need:142 do__sell:41 do__you:42 do_i:72
do_it:-126 do_that:-49 do_the:57 do_they:74 do_you:-40 doc:62 does:159 does__cost:-39 does__get:54 does__take:-62
does_it:-50 does_that:100 doesnt:-64 doesnt_matter:-94 doing:79 doing_$:63 doing__it:56 doing_that:-45 doing_the:-37
doing_to:56 donde__escriben:85 donde__que:58 donde_es:-44 donde_estan:-61 donde_me:37 done_$:40 done__i:-39
done_in:-41 dont_$:140 dont__the:-49 dont__to:51 dont__what:43 dont_even:-39 dont_know:-56 dont_want:-67 door:-87
door_$:-47 dos__es:-43 down:65 down_$:50 down_for:121 down_on:122 drive:136 drive_$:-49 drive__to:82 drive_it:91
drive_to:57 drives:-46 driveway:-41 driving:53 drop:-45 due:163 due_for:56 dura:38 eating:44 echa:58 el:-70
el__antes:43 el__de:-90 el__es:41 el__hasta:-47 el__no:-38 el__paso:43 el__por:60 el__que:-121 el__rojo:45 el__se:-64
el__tiembla:-123 el__voy:40 el_aceite:68 el_de:41 el_finde:43 el_freno:-46 el_liquido:41 el_martes:-47 el_que:-58
el_tablero:-47 else:61 else_$:38 en:54 en__carro:43 en__me:77 en__que:-70 en_cuanto:-45 en_el:131 en_julio:43
en_junio:101 en_la:-46 en_lo:-72 en_que:76 en_un:-42 encontraron:83 encontraron_$:45 engine:81 entendi:48 entra:-45
entrada:-40 entre__y:39 entre_y:-37 era:72 es:222 es_$:-165 es__direccion:-48 es__o:43 es__que:113 es__se:-58
es__y:84 es_el:59 es_eso:56 es_gratis:-47 es_grave:61 es_lo:100 es_malo:101 es_mi:-90 es_muy:89 es_normal:130
es_que:-129 es_su:-38 es_tan:45 es_tardado:-59 es_un:38 es_una:-38 esa:141 esa__no:57 esa__que:47 esa_hora:48 esas:75
escriben:-38 escriben_$:73 ese:90 ese__no:-42 ese_carro:-66 ese_servicio:60 eso:275 eso_$:71 eso__el:-91 eso__es:74
eso__que:85 eso_cuanto:-74 eso_de:42 eso_del:100 eso_en:78 eso_que:-55 eso_y:56 eso_ya:-37 espanol:52 esperar_$:62
espero_$:77 esta:82 esta_$:90 esta_bien:-40 esta_muy:112 estan:44 estan_$:69 estare:49 este:-48 esto:-57 esto_$:-57
even:139 even__a:68 even_is:76 every_morning:40 exactamente:43 exactamente_$:43 exactly:91 exactly__you:50 exit:-112
explica:144 explicar:-64 fall:49 fall_$:-37 falta:87 family:70 far:42 favor_$:60 fee:-49 few:82 filter:51 filtro:75
filtro__cabina:44 filtro_de:44 find_you:-40 finde:44 fine__it:-57 five:50 five_$:41 fixing:57 flashing:-52 fleet:-51
florida:37 fluid:95 fluid_$:70 fluid_flush:-71 flush:53 foco_rojo:42 follow:57 for:62 for_$:85 for__and:158
for__brakes:42 for__car:48 for__i:-77 for__to:-53 for__what:79 for_a:-95 for_again:79 for_all:-40 for_it:-48
for_me:54 for_my:-56 for_now:-42 for_thursday:74 for_tires:-101 for_tomorrow:64 for_what:39 for_you:-85 forever_$:-47
foto:-69 found:79 four:42 four_$:42 free:-144 free_$:-64 free_or:-55 freno:-69 freno_se:-37 frenos:83 frenos_$:99
friday_i:47 from_my:-40 front:106 fue:102 fue__que:108 fue_lo:87 fuera:42 fuerza:56 fuerza_$:56 fui:-37 game:-85
garage:-50 gas:-79 gas_$:-40 gave:63 gave_me:69 get:-53 get_a:38 get_for:-82 get_it:-52 get_me:37 gets:89 getting:62
go:-67 go_for:-167 go_on:146 going__be:-123 going__make:46 going__run:-38 going_to:-47 gone:-45 good_for:65 got_a:-46
got_in:54 gracias_pero:41 gratis:-64 gratis_$:-58 grave:90 grave_$:57 guess:86 guess__is:91 habia:49 habla:51
habla_$:61 hableme_y:44 hace:76 hace_$:112 hace__ruido:-39 hace_el:37 hace_falta:41 hace_un:-38 hacer:93 hacer_$:54
hacerlo:-54 had:-79 hago_$:39 happen:118 happens__i:53 happens_if:53 hard:-48 hard_to:-48 has:-57 hasta__me:37
hasta_entonces:73 hasta_que:-139 have_$:41 have__do:184 have__wrong:-45 have_it:-69 have_somebody:39 have_to:62
hay:37 hay__si:128 her:45 hice:-50 hicieron_$:-38 hicieron__la:43 hicieron_el:-44 hicieron_en:70 hit_k:68 hitch:-44
hold:88 hold_off:-40 hold_that:-64 hold_up:109 holding:48 home_$:82 hora_no:57 hour:-87 house:-51 how:63 how__are:94
how__can:137 how__do:-63 how__does:-101 how__for:-76 how__how:39 how__i:-109 how__is:-65 how__it:85 how__longer:54
how__the:89 how__time:-39 how__to:-41 how__was:-41 how__will:-70 how_come:266 how_do:75 how_does:-74 how_is:-58
how_late:-59 how_many:73 how_much:-56 how_to:-54 how_urgent:47 hoy:-73 hurt:43 i_$:-100 i__all:75 i__been:38
i__do:121 i__done:106 i__drive:66 i__for:-72 i__going:41 i__had:42 i__home:51 i__how:-43 i__i:-53 i__in:70 i__it:46
i__know:-45 i__like:42 i__my:56 i__need:87 i__off:-42 i__on:129 i__that:-59 i__these:-48 i__this:40 i__two:64
i__use:-43 i__want:-65 i__where:-56 i__who:-56 i__with:-49 i_be:72 i_booked:46 i_can:-51 i_cant:74 i_come:-142
i_could:-37 i_do:-77 i_dont:54 i_drive:74 i_go:133 i_going:62 i_got:58 i_hit:65 i_just:65 i_keep:51 i_know:-40
i_left:-43 i_let:-37 i_lose:57 i_mean:-103 i_never:60 i_put:-59 i_say:-43 i_skip:106 i_still:56 i_thought:68
i_use:-82 i_wait:69 i_will:-52 iba:-44 iba_a:-44 idea:-55 idea_$:-40 idk:-52 if:137 if__dont:93 if__is:-37
if__just:67 if__skip:106 if_i:231 if_my:-50 ignore:73 ill__it:42 ill__on:40 im__a:50 im__for:74 im__on:104
im__the:-44 im__what:-62 im__work:48 im_at:48 im_down:-80 in:-56 in_$:-76 in__a:70 in__am:-38 in__car:37 in__fall:39
in__i:-47 in__is:48 in__me:-46 in__on:52 in_a:-38 in_spring:44 in_that:175 in_there:47 incluye:103
incluye__servicio:110 interesa:-41 interest:37 ir_el:-40 ir_manana:38 is:119 is__a:74 is__about:-121
is__appointment:104 is__bad:164 is__bill:42 is__come:-111 is__cost:-75 is__dangerous:58 is__do:91 is__for:131
is__free:-71 is__going:-76 is__labor:-46 is__like:-57 is__number:-38 is__off:76 is__oil:-51 is__ok:56 is__on:77
is__one:44 is__out:-56 is__point:88 is__price:-64 is__really:-77 is__run:-162 is__safe:93 is__still:-77 is__the:56
is__thing:77 is__wait:-104 is__what:59 is__when:45 is__wifi:-90 is__with:72 is_a:147 is_dead:-37 is_due:87
is_fine:-98 is_for:67 is_friday:-44 is_it:157 is_low:60 is_open:-55 is_that:178 is_the:-37 is_there:79 is_what:-53
is_wrong:37 is_your:-54 isnt:43 it:153 it__a:-86 it__an:-89 it__be:-62 it__do:41 it__due:67 it__fine:-44 it__for:100
it__free:-49 it__how:47 it__is:84 it__like:-41 it__on:-107 it__out:78 it__that:153 it__the:-56 it__then:45 it__to:38
it__up:107 it_a:68 it_again:-38 it_anyway:-61 it_bad:106 it_be:-88 it_come:-81 it_cost:-101 it_costs:-55 it_down:161
it_due:39 it_go:-77 it_got:46 it_how:78 it_im:74 it_in:-42 it_is:-47 it_last:-50 it_mean:55 it_now:99 it_ok:71
it_on:-76 it_or:-84 it_over:52 it_overnight:-61 it_run:-39 it_safe:71 it_says:-70 it_still:-60 it_that:110 it_the:-71
it_to:87 it_wait:165 it_what:52 it_when:40 it_would:-62 jaja:-43 je:-79 job:-41 joint:58 juego:-53 jueves_$:-40
jueves__la:55 jueves__que:40 jueves_por:55 julio:45 junio:71 just__a:39 just__that:40 just__what:47 just__you:-53
just_had:83 just_the:-43 keep:48 keep__me:-46 keep_texting:-46 keep_them:38 kids__the:41 know__is:57 know__to:-58
know_how:-39 know_it:58 la:-66 la__asi:46 la__de:-44 la__es:46 la__no:-75 la__que:57 la__trae:55 la_banda:41
la_bateria:-41 la_bomba:37 la_cita:147 la_ciudad:42 la_manana:49 la_noche:39 la_otra:-76 la_semana:-40 la_verdad:-42
labor:-91 labor_$:-48 lado:57 las_$:-62 las_llantas:57 las_millas:58 last:65 last__why:86 last_month:-65
last_night:-79 last_time:85 last_week:-41 last_year:96 late:-38 late__i:-59 later:-63 later_on:-41 le:103 le__a:71
le__algo:-38 le__de:39 le__en:67 le__eso:70 le__nada:71 le__todo:-37 le__y:87 le_digo:-47 le_falta:60 le_hacen:157
le_pasa:37 le_sale:39 le_toca:83 le_van:76 le_voy:-47 leave_it:-61 leave_me:51 leaving:65 left:64 left_$:93
left__the:60 left_on:99 les:152 let:53 life:73 life_$:71 light__on:-53 light_came:-45 lights:-45 lights_on:-41
like_an:-90 like_im:76 like_that:52 line:-44 liquido:83 list:71 living:-37 llanta__una:90 llanta_trae:55
llantas_$:164 llegue:-49 llevarla:70 llevarlo:-40 llevo_$:-44 llevo_a:63 lo__la:39 lo__le:-45 lo__mi:-37 lo__por:-55
lo__si:48 lo__y:81 lo__ya:70 lo_hacen:-73 lo_llevo:-46 lo_necesito:61 lo_ocupan:69 lo_que:-52 lo_uso:-41 long__how:54
long__i:70 long__it:83 long__need:-42 long__the:41 long__you:-72 long_do:-50 long_does:-82 long_will:-48
long_would:-64 long_you:-42 longer__the:42 longer_have:51 look__a:-43 looked_at:53 los:-50 los__a:41 los__esta:80
los_carros:-37 los_de:55 los_dos:66 los_frenos:37 lose:58 love:-109 low:220 low_$:51 low_again:43 lugar:-61
luz__aceite:46 make:48 make__to:152 make_it:57 making:-44 mal:99 mal_$:135 mal_servicio:-87 malo:180 malo_$:42
manana__que:-51 manana_pero:39 mando:72 manejando:77 manejando_$:43 manejar:53 manual:99 many:73 marca:-111 marzo:84
mas:68 mas__menos:-44 mas_adelante:-37 mas_de:-64 mas_o:-44 mas_tarde:-41 matter:-49 maybe__the:37 me_$:68 me__a:114
me__call:56 me__de:-37 me__eso:38 me__falta:-40 me__is:-72 me__it:143 me__like:-68 me__o:-45 me__por:49 me__que:-39
me__todo:41 me__want:38 me__what:-51 me__you:70 me_acuerdo:81 me_at:60 me_back:-72 me_dijo:-43 me_explica:165
me_first:-37 me_hace:-70 me_i:55 me_in:-78 me_it:-43 me_lo:-104 me_on:56 me_puede:42 me_puedo:43 me_recuerda:45
me_salio:-78 me_sirve:-62 me_stuff:-38 me_that:38 me_then:-61 me_toca:53 me_tonight:47 me_urge:-101 me_van:37
me_voy:45 me_what:56 me_who:-43 mean:-59 mean_$:-80 mechanic:39 mejor__lo:-41 menos:-73 mensaje:-75 mensaje_$:-67
metal_$:54 metal_on:43 meter:-59 mi:-101 mi__dice:51 mi_break:-74 mi_carro:93 mi_compadre:39 mientras:96 mil:49
mileage:43 miles:38 miles__i:65 milimetros:80 mine:91 mine_$:52 mis:105 mismo_$:44 mm:172 mon_or:40 money:-55
money_wise:-49 month_$:-37 months:65 months_$:76 more:62 more_$:131 morning_$:-52 morning_so:49 mother:57 motor:55
motor_$:-47 much:-93 much__is:42 much__it:-44 much_for:-49 much_is:-124 much_longer:54 much_time:-39 much_to:-49
muerte:64 muevala:41 must:90 muy:122 muy_mal:66 my:-60 my__already:39 my__for:41 my__is:-76 my__says:73 my__what:42
my_appointment:-72 my_bill:104 my_bonus:63 my_brother:-42 my_lunch:42 my_refund:42 my_sheet:51 my_van:49
my_wallet:-43 myself_$:56 nada:42 near:49 near_the:51 necesario:48 necesito_$:93 necesito__me:-37 necesito_que:-37
necessary:75 necessary_$:75 need:134 need__appointment:-42 need__bring:-44 need__for:-103 need__oil:92 need_a:-83
need_an:47 need_that:47 need_the:-56 need_to:-181 needed_$:57 needs:47 needs_to:94 negocio:-63 new:-38
new_battery:-42 next:57 next_to:98 ni:-112 nice:74 night:-79 night_$:-79 ninos__la:47 no_$:-88 no__acuerdo:81
no__but:52 no__do:40 no__esa:49 no__hago:71 no__is:95 no__lo:42 no__nada:66 no__necesario:-141 no__pero:52 no__si:-46
no__the:-37 no__them:45 no__was:-67 no__y:42 no_a:54 no_but:-46 no_es:-75 no_gracias:67 no_i:-47 no_keep:47 no_lo:98
no_me:69 no_my:96 no_noise:39 no_para:-55 no_pedi:52 no_puedo:-78 no_voy:79 no_what:113 noise:43 noise__all:39
noise_at:78 nomas_que:-41 noon:-72 normal:130 normal_$:80 not:-181 not_$:-178 not__car:87 not__me:43 not__month:50
not__my:41 not__week:47 not_a:37 not_before:41 not_this:97 nothing:-41 now:86 now_$:81 now__i:92 now_it:-43
number:-133 number_$:-59 numbers:63 o:247 o__que:-75 o_como:44 o_es:70 o_hay:-75 o_menos:-44 o_no:41 o_nomas:74
o_se:-65 ocupan:61 ocupan_$:69 ocupo_$:39 odometer:66 odometer_is:53 of__do:-55 of__how:56 of_a:-44 of_my:-58
of_oil:-55 of_them:50 of_those:38 off_$:78 off__my:-41 off_for:-51 off_of:98 off_the:-71 oil:-41 oil__on:-43
oil__you:-74 oil_light:80 oily:50 ok:113 ok_$:-77 ok__drive:85 ok__it:-37 ok__my:-50 ok__the:47 ok_but:-42 ok_for:74
ok_is:-37 ok_to:163 old_$:41 on:61 on_$:-54 on__freeway:40 on__is:59 on__list:121 on__lunch:42 on__road:60
on__sheet:57 on__th:71 on_in:-37 on_me:38 on_metal:43 on_my:78 on_that:-65 on_them:42 on_what:-52 once:-41 onda:42
one:-41 one_$:74 one__the:-45 one__those:44 one_of:43 ones:43 only__it:-44 only__the:-69 open:-43 open_$:-47
opinion:40 or:195 or_$:-47 or__it:-69 or_a:138 or_is:56 or_no:132 or_the:79 or_what:-146 other:57 otra_$:-37
otra__que:69 otra_vez:43 otro_dia:-50 out__door:-47 out_a:75 out_by:-49 out_the:-45 over_$:-44 over_the:61 own:91
pads_$:-46 paper:84 para__es:-44 para__lo:112 para__que:-118 para__quieren:77 para_cuando:-46 para_entonces:-40
para_lo:-56 para_que:211 pare_de:39 part:51 parte_de:38 pasa:144 pasa__no:55 pasa_si:80 pasar:67 pase:-64 pase_la:-39
payin:-104 pedi:38 peligroso:53 peor:83 peor_$:107 pero:71 pero__cuanto:61 pero_a:-50 pero_digame:45 pero_el:47
pero_que:73 person:38 phone__i:39 pick:-39 pick__up:-40 pickup:39 pie:98 pie_$:70 pieza_que:40 place:-87 play:64
play__the:76 play_in:76 please:58 please_$:58 please__i:51 please_do:-57 please_im:83 please_phone:-38
please_what:-38 point:75 pone:61 ponen:-38 poquito:88 por__manana:47 por__me:-73 por__no:-141 por__rumbo:-94
por_donde:-44 por_eso:47 por_las:-41 por_que:316 por_si:-38 por_telefono:-38 porque:-47 porque_el:-130 porque_se:58
precio_y:39 prefiero:-39 prefiero__me:-41 prefiero_que:-41 primero_$:43 problema:101 puede:96 puede_$:-71
puede__para:50 puede_esperar:72 puede_ser:57 puedo:106 puedo__asi:111 puedo__hoy:-40 puedo__o:-65 puedo_esperar:103
puedo_manana:-43 puedo_seguir:69 pues:-44 puro:76 pushing:82 put:51 put__in:-37 put__off:134 put__on:45 put_in:-45
put_it:40 que_$:-158 que__a:-58 que__agua:-53 que__caro:-45 que__con:-76 que__cuando:64 que__dan:49 que__decir:85
que__el:84 que__en:138 que__es:-131 que__ese:60 que__eso:95 que__hacen:126 que__hicieron:46 que__le:162 que__lo:118
que__mal:144 que__malo:76 que__mi:-44 que__ni:-37 que__otra:-71 que__pusieron:47 que__que:-39 que__si:112
que__toca:114 que__van:114 que_ahora:56 que_dia:-38 que_dicen:65 que_era:158 que_es:351 que_esta:40 que_fue:164
que_hacer:-37 que_hora:-45 que_incluye:119 que_la:-130 que_le:262 que_les:55 que_lo:40 que_mal:-87 que_me:-59
que_ni:-61 que_no:-234 que_nunca:-40 que_pasa:84 que_pase:-39 que_paso:-42 que_precio:-49 que_quiere:85
que_quieren:77 que_se:63 que_si:-109 que_significa:45 que_tan:168 que_tiene:157 que_va:-54 que_yo:-46 queda:60
queda_$:137 queda_el:-50 quedar:62 quedo:-39 quemado:37 quick:-73 quick__or:-40 quien_es:-50 quiere_decir:85
quieren:110 quiero:-56 quiero__el:-63 quiero_ir:-39 quiero_saber:37 quote:-81 quote_$:-51 rapido:-52 rato:-67
rato_$:56 ready:-61 ready_$:-55 really:104 really_free:-42 rear:80 rear_$:82 reason:62 recuerda:45 recuerdeme:39
red:44 red_oil:43 refund:42 remind:44 remind__in:-44 remind__what:91 remind_me:45 replace:88 reply:-70 report:54
revisan:65 revision:56 riding:69 right_now:75 rip:-97 ripped:64 road:46 road_trip:84 rod:65 rotated:-38 rotors:37
rueda:-39 ruido__de:54 ruido_como:54 rumbo:-94 run:-337 run_$:-171 run_me:-127 rush:83 saben:62 saber:41 sacar:41
safe:108 said_$:-37 salio_una:-70 same:-58 saving:-79 say_$:67 say_anything:-60 say_it:-41 saying:59 says:66
says_$:-65 scale:45 se:45 se__es:40 se__eso:83 se__hicieron:-37 se__la:71 se__las:58 se__prendio:-45 se__sale:39
se__y:42 se_descompone:55 se_prendio:52 se_puede:-73 se_queda:-74 sea:-64 see:-40 see__my:-56 see_what:-81 seguir:49
segun:89 seguro:57 seguro_$:44 seguro_que:-54 semana:-51 sent:-40 ser:86 ser_$:53 ser_el:46 sera:128 serious:135
serious_$:71 set:-69 set__back:-51 set_me:-51 sheet:101 sheet_$:48 shop:-100 shop__it:-39 shop_is:-41 should__be:77
should_i:80 show:-44 shudders:42 shut:-52 si:127 si_$:-69 si__bien:98 si__dejo:85 si__espero:107 si__estoy:43
si__llevo:-37 si__lo:91 si__no:66 si__puede:-37 si__que:-76 si__tan:43 si__voy:38 si_fuera:82 si_la:39 si_le:-68
si_lo:113 si_no:139 si_nomas:-39 si_puedo:-42 si_ya:-76 siendo:54 siente_que:-43 significa:45 sigo:114 sin:38
since_i:47 sirve_$:-64 sirven:-39 sit:-68 sit__wait:-62 smell:-40 snow:-42 so_$:-48 so__are:59 so__i:55 so__is:81
so_cancel:54 so_how:42 so_i:-42 so_soon:90 so_what:55 something_that:114 something_to:-59 soon:89 sounds:40 soy:-59
spot:37 spot__the:41 squeal:-54 start:-49 starts:39 step:-50 still:-43 still__just:51 stop_$:-40 street:-62 stuff:74
su_carro:83 supposed:38 supposed__be:46 supposed_to:38 sure:-61 tablero:-47 take:-41 take_it:50 tal:-40 talking_$:47
taller:-43 tambien:-43 tan:243 tan__esta:65 tan__estan:96 tan_mal:123 tan_malo:68 tardado:-59 tardan:59 tardan_$:52
tarde:-38 tarde_$:-42 tax:-60 tax_$:-55 tech:73 telefono:-49 telefono_$:-50 tell_me:76 telling:52 telling_me:52
tengo:-41 tengo_que:-62 text_again:37 texting:-50 texting_me:-55 th__it:47 th_or:64 than:-56 thanks_but:47 that:113
that_$:-56 that__be:-58 that__do:50 that__for:48 that__i:60 that__it:46 that__last:-79 that__me:-74 that__to:-51
that_a:88 that_and:96 that_bad:58 that_can:44 that_cost:-38 that_done:-63 that_for:-41 that_going:-91 that_is:-138
that_isnt:-38 that_it:39 that_one:41 that_service:-43 that_take:-56 that_the:49 that_was:-64 that_wont:-58
the__and:-43 the__are:-44 the__as:73 the__does:37 the__for:65 the__got:40 the__if:63 the__need:45 the__number:-45
the__one:83 the__says:155 the__so:-52 the__stuff:74 the__thing:139 the__to:45 the__were:37 the__with:119
the__would:46 the_am:40 the_belt:113 the_car:93 the_cost:48 the_dash:-49 the_door:-47 the_freeway:40 the_gas:-50
the_house:-49 the_invoice:61 the_last:48 the_list:64 the_motor:60 the_other:90 the_price:-84 the_quote:-78
the_same:-41 the_sedan:43 the_tech:81 the_thing:109 the_tires:170 the_two:-73 the_wait:-116 the_way:-52 the_winter:51
the_wipers:38 the_wrong:-69 them:116 them_$:78 then_$:52 these:41 these_$:95 they:186 they_$:82 they__it:-45
they__to:126 thing_$:-105 thing__the:38 thing_that:83 things:37 third:-41 thirty:67 this:66 this_$:-69 this__again:61
this__for:120 this__how:45 this__the:72 this_about:-148 this_for:50 this_is:-68 this_number:-62 this_one:38
this_week:39 those:43 though_$:67 thursday_and:67 thursday_at:64 tiene:53 tiene_$:64 tiene_mi:38 tiene_una:37
tienen_$:-40 tienen_donde:-37 til_my:-37 time:-144 time__i:-84 tira:-39 tirado:68 tire__the:68 tires:56 tires_$:37
to:58 to_$:-70 to__a:-42 to__again:37 to__and:72 to__anything:-37 to__in:43 to__me:-114 to__the:-64 to__week:55
to__what:104 to__with:52 to_bring:-66 to_change:45 to_come:-47 to_do:86 to_drive:52 to_it:62 to_know:85 to_me:-91
to_my:-68 to_next:44 to_put:54 to_say:-52 to_see:-79 to_tell:-62 toca:96 toca_$:114 today_$:-54 told:-62 top:119
top_off:153 tow_hitch:-44 town:-44 town_$:-43 trade:-38 trae_$:-62 trae_una:38 traia:39 tread:149 tres:-54 trip:44
tu:-47 tue:41 tuesday_$:-37 tuesday__how:-50 tuesday__is:61 tuesday_and:41 tune:47 tune_up:47 turns:39 turns_out:39
two_$:-46 two_weeks:40 un__a:52 un_dia:-39 un_poquito:137 un_rato:-67 un_viaje:57 una__de:-42 una__se:38 una__y:55
una_cosa:39 una_semana:37 unless:-51 unless__is:-51 unless_it:-51 uno:-76 up__is:-44 up_for:42 up_on:-46 up_to:49
urge:-146 urgent:47 urgente:61 use:-71 use_a:-43 use_it:84 use_the:55 uso:-41 va_que:56 vacaciones:43 vale:-72
vale_$:-62 van:56 van__hacer:56 van_a:65 vea:44 veces:-49 vegas:39 vegas_$:40 ven:78 veo:124 ver:-74 veras:72
verdad:83 vez_lo:59 viaje:84 viaje_$:53 vida:77 viene:44 viene_$:-45 viene__el:54 viernes__de:79 viernes_no:41
viernes_y:41 voy_$:47 voy_a:-38 wait:43 wait_for:-57 wait_on:73 wait_or:72 waiting:51 wallet:-43 want__know:62
want_it:52 want_my:37 want_the:-58 want_to:69 was:46 was__last:53 was__there:-42 was__to:39 was_done:-41 was_the:152
watch:-40 way:-112 way__you:-37 we__a:53 we__it:-88 weather:-69 week__it:42 week_from:-41 week_it:49 were:52 what:147
what_$:-79 what__a:158 what__are:51 what__costs:-55 what__do:45 what__if:53 what__is:-69 what__it:61 what__that:-93
what__wrong:86 what__you:166 what__your:-49 what_a:-64 what_about:-45 what_am:60 what_did:306 what_do:-156
what_does:146 what_else:44 what_even:76 what_exactly:66 what_for:143 what_happens:41 what_i:-92 what_it:-132
what_my:-49 what_needs:133 what_should:-58 what_street:-42 what_this:42 what_time:-151 what_was:177 what_will:-68
what_would:-138 wheel_$:-40 when:-143 when__hit:56 when__i:-45 when__is:-38 when_i:-63 when_you:45 whenever:55
where__the:132 where__you:-61 where_are:-38 where_is:-49 which_$:-60 which__are:140 which__do:-97 which__is:-117
which_exit:-41 which_shop:-46 who:-112 who__is:-47 who__it:-61 who__this:-60 who_am:37 who_is:-124 who_this:-42
why:314 why_$:-39 why__it:92 why__soon:91 why_do:113 why_does:58 why_is:72 why_not:-119 why_so:91 why_would:96
whys:77 whys_it:101 wifi:-90 wifi_$:-89 will:90 will__be:-85 will__it:-38 will_it:84 will_the:79 winter:47
winter_$:51 with__i:42 with_a:-88 with_it:50 with_tax:-58 with_the:65 wont:-51 wont__coming:40 wont__over:-53
wont_be:-81 work:46 work_for:43 works:-47 worried:58 worse:106 would__be:64 would__get:39 would__have:-46 would_it:49
would_that:-81 would_you:136 wouldnt:-69 wreck:47 write:49 wrong:87 wrong__i:48 wrong_number:-45 wrong_with:81 y:100
y__a:-50 y__cobraron:-37 y__como:68 y__de:106 y__donde:-43 y__es:-73 y__lo:73 y__me:-43 y__puedo:-54 y__que:51
y_como:108 y_cuanto:49 y_de:86 y_donde:-37 y_el:55 y_es:54 y_ese:56 y_eso:-53 y_le:-42 y_me:-40 y_para:67 y_por:76
y_si:118 ya:-116 ya_$:89 ya_esta:-69 ya_lo:-40 yeah:-62 yeah_that:-49 years:39 yellow:65 yes:-92 yes_$:-64
yes__how:46 yes__i:-58 yes__what:76 yes_i:-65 yes_lets:48 yet:93 yet_$:92 yo:-90 you:-70 you_$:-39 you__even:43
you__for:-143 you__me:166 you__my:96 you__text:37 you__texting:-46 you__the:-74 you__to:38 you__today:67
you__what:-38 you__when:38 you__your:80 you_and:40 you_are:-39 you_be:134 you_can:-64 you_charge:-56 you_charging:-52
you_dont:51 you_find:52 you_gave:69 you_get:-71 you_have:-108 you_lost:87 you_mean:-119 you_need:-89 you_on:-92
you_see:68 you_sell:41 you_tell:68 you_the:-37 you_to:-60 you_use:79 your:-90 youre:62 zero:-48
"""
