"""What speaks for and against `price`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "price"
BIAS = -180
WEIGHTS = """\
#abaj:-62 #aban:-33 #aber:72 #abia:54 #abin:-39 #abla:-31 #able:-44 #abor:117 #abra:-197 #acar:30 #acer:-58 #ache:-52
#acia:-37 #acin:-49 #acki:-33 #acro:34 #adin:-35 #adli:39 #ador:-47 #affo:-31 #afte:51 #agno:74 #agon:35 #agos:-49
#ague:-79 #ahea:42 #ahor:29 #aint:63 #ajan:-38 #alan:29 #alat:41 #alca:77 #alcu:-30 #aldr:36 #ales:51 #algo:30
#algu:29 #alie:61 #alig:36 #alio:43 #alir:-31 #alki:36 #alla:-55 #alli:-49 #allp:132 #ally:41 #alon:38 #also:69
#alta:-82 #alto:-53 #amag:51 #amos:41 #anad:-54 #anas:-32 #ance:63 #anda:71 #ands:52 #anez:33 #ange:63 #angi:-96
#anit:37 #anta:102 #ante:29 #anto:127 #anty:54 #anyt:36 #anza:76 #aper:74 #apid:-29 #appe:-44 #appr:-60 #apro:58
#arad:38 #arat:63 #arch:62 #arda:-123 #ardo:-47 #arec:-44 #aren:-32 #argi:100 #argo:122 #aria:55 #ario:-30 #arlo:37
#arly:43 #arms:47 #aron:-156 #arqu:-48 #arra:50 #arte:62 #arti:-44 #asar:-37 #ased:-55 #asis:-31 #ason:31 #asta:-49
#asti:-41 #asto:-33 #asur:-33 #atan:-95 #atas:42 #atbe:-32 #atch:80 #ated:-76 #ater:32 #athe:30 #atio:-31 #atis:113
#atll:138 #atra:-32 #atro:39 #aunq:33 #ause:-47 #avor:-74 #aybe:32 #ayin:51 #azul:58 #back:31 #baja:62 #baje:-52
#bala:95 #ball:131 #band:35 #bank:-60 #bara:56 #batt:81 #beat:75 #befo:73 #best:37 #bian:60 #bien:-60 #bier:30
#bill:-80 #bios:37 #blan:-49 #body:-47 #bols:-30 #both:29 #brak:63 #brar:-74 #brea:-57 #bren:-45 #brin:38 #brok:-45
#buck:-32 #burs:29 #buzz:30 #cabi:-39 #cada:-59 #cafe:-47 #calc:-32 #cale:-36 #cali:71 #call:29 #canc:39 #canz:56
#card:40 #care:-50 #carg:97 #caro:-65 #cart:31 #cash:-74 #caus:-47 #cela:52 #celo:34 #cerl:-52 #chan:-76 #char:117
#chas:54 #chea:76 #chec:90 #chee:37 #cher:-40 #chis:-79 #chof:31 #choo:-50 #cial:173 #ciat:-60 #cibo:-32 #cien:76
#cier:-49 #cing:92 #cino:-31 #cket:90 #ckup:39 #clam:-31 #clie:-31 #club:-50 #clud:68 #clut:-59 #cobr:78 #come:83
#como:29 #comp:74 #corn:-34 #cosa:-31 #cost:408 #coti:180 #cous:-57 #cove:93 #crap:35 #craz:-47 #creo:-45 #crib:-45
#cros:30 #ctio:-42 #ctiv:34 #ctua:57 #ctur:-58 #cual:-36 #cuan:57 #cuat:39 #cuen:52 #cuer:75 #curi:105 #daba:-32
#dale:46 #dama:51 #dame:64 #damo:49 #days:77 #dden:59 #ddin:31 #deal:-41 #deba:37 #debe:-36 #debo:31 #deci:86
#deep:153 #deja:29 #deje:-45 #dejo:-93 #deme:85 #demo:-112 #depe:50 #ders:-29 #desc:135 #desp:-61 #deti:-91 #diag:74
#dias:-93 #dice:49 #dich:67 #dici:40 #diez:57 #diga:128 #digo:44 #dila:-146 #dime:61 #dine:-68 #ding:-33 #disc:54
#ditc:35 #dito:-29 #dlig:39 #doin:-69 #doll:35 #door:64 #down:-31 #dred:99 #dres:-43 #dria:50 #driv:-43 #dura:-188
#each:-114 #eadi:-34 #eadl:39 #eady:53 #eaks:30 #eall:49 #eals:111 #eape:99 #earl:41 #easo:31 #easu:-33 #ebaj:120
#ecia:180 #ecib:-44 #ecio:200 #econ:-29 #ecti:34 #ecue:36 #edam:79 #edan:-51 #edia:-33 #eeds:-38 #eeke:29 #eemb:-32
#eers:37 #eewa:-31 #efec:29 #efor:73 #efun:-91 #eggs:-73 #eigh:-36 #ejam:-41 #ejan:52 #ejor:-62 #elar:68 #elel:52
#elen:-64 #else:-43 #elva:-41 #elve:-55 #emad:-47 #eman:64 #embl:-33 #embo:-32 #emin:53 #emor:-109 #empo:-52
#enci:-50 #ende:-52 #ends:115 #enen:-60 #enga:-53 #engi:-44 #engo:-36 #enin:-30 #enio:74 #enme:-60 #enos:33 #ensa:-39
#ensi:45 #enta:-61 #ente:-37 #enti:39 #entr:-57 #ents:-40 #eopl:-33 #epen:50 #epla:-44 #eran:83 #eras:46 #erch:-37
#erda:33 #erde:-32 #erdi:-64 #erdo:-61 #ered:43 #eria:36 #erio:-50 #erlo:-63 #eron:-106 #eros:110 #erre:-30 #ersi:31
#erta:-41 #erti:29 #erva:-31 #ervi:47 #esar:-31 #escu:126 #esor:68 #espe:48 #espu:-61 #este:-30 #esti:153 #estu:-37
#esup:62 #etan:59 #etic:85 #etie:-93 #etro:-43 #evan:-75 #evar:47 #evas:38 #even:-81 #ever:82 #evis:41 #eway:-31
#expe:49 #fact:-52 #falt:-83 #favo:-73 #feel:-38 #fell:-35 #feri:-30 #ffer:-39 #fift:44 #figu:79 #fila:-46 #fill:-37
#fina:90 #fine:-39 #flat:-29 #flee:45 #flui:-64 #ford:-31 #fore:61 #form:34 #foun:-99 #free:143 #from:-96 #fron:69
#fter:51 #fuer:-62 #fund:-92 #game:85 #gana:-77 #garr:29 #gast:-77 #gent:-32 #gett:-53 #gimm:43 #gine:-44 #give:44
#glan:-48 #glar:44 #gnme:36 #gnos:74 #goes:39 #goin:107 #goma:36 #gone:42 #gote:35 #gran:-49 #grat:113 #gros:-41
#guan:-41 #guie:39 #gure:79 #habi:54 #hago:64 #hame:-36 #hand:36 #happ:-68 #hard:41 #harg:126 #hatl:138 #head:67
#heap:76 #heck:77 #heer:37 #hers:-30 #hese:54 #hich:-67 #hici:-78 #high:-155 #hist:-58 #hitc:36 #hizo:-48 #hock:31
#hofe:31 #hole:47 #hone:-33 #hool:-37 #hora:41 #hose:-42 #houg:36 #hous:86 #hout:-33 #hree:33 #huel:-37 #humo:-34
#hund:99 #hurt:68 #husb:49 #iado:-37 #iagn:74 #iate:-60 #ibra:-33 #ibre:32 #ices:-40 #icey:-81 #icho:67 #icin:130
#icio:58 #icks:38 #idea:39 #iden:103 #ideo:-30 #idit:-30 #iemp:-37 #ierd:-35 #iero:-47 #ierr:-44 #ieve:-53 #ifty:42
#igam:94 #ignm:36 #igua:34 #igui:40 #igur:79 #ilad:36 #ilat:-146 #iler:29 #iles:-29 #ilim:-43 #ille:71 #ills:-34
#imad:147 #imat:55 #imes:-38 #imet:-43 #imme:43 #inal:95 #incl:59 #indl:29 #iner:-68 #iniv:40 #inne:-37 #inte:69
#inut:-47 #invo:-73 #ione:29 #iosi:73 #ippe:-38 #irmo:34 #isan:-33 #isco:57 #ises:53 #isie:39 #isio:50 #isit:-40
#ismo:43 #isto:-30 #itan:43 #itch:50 #ivan:40 #izad:39 #jalo:33 #jame:-31 #juev:30 #just:70 #keep:-42 #kept:-84
#keys:-37 #kick:49 #kind:37 #king:75 #labo:117 #lace:82 #laci:-49 #lada:31 #lado:32 #lamp:-32 #lars:40 #last:43
#lata:-58 #lcan:80 #lcul:-30 #ldnt:-37 #ldri:36 #leak:42 #leet:45 #left:-129 #lela:52 #lele:-29 #lenm:-33 #leve:-30
#levo:48 #lgun:30 #lica:-29 #lien:30 #lies:-32 #life:-49 #lift:-38 #lign:36 #lime:-43 #line:59 #lita:52 #lkin:36
#llar:35 #llas:-52 #lled:90 #llpa:132 #lone:33 #long:-82 #loss:-55 #lows:37 #lpar:132 #ltan:-32 #ltim:-53 #lude:61
#luga:-31 #luid:-64 #lutc:-59 #lvan:-36 #mado:87 #mage:52 #make:-51 #mala:-34 #mall:-68 #malo:-29 #mand:68 #many:71
#marq:-48 #mate:65 #matt:-70 #mayb:32 #mayo:-34 #mber:70 #mbio:41 #mbol:-42 #mean:40 #meas:-33 #medi:-57 #mejo:-62
#meno:63 #mens:-42 #ment:45 #meri:123 #metr:-43 #mien:36 #migh:33 #mini:83 #minu:-47 #mise:29 #mone:-54 #mora:-109
#morn:-34 #mpli:-34 #mpor:30 #mpre:69 #much:297 #muev:-81 #must:-44 #ncea:32 #ncio:57 #nclu:76 #ndem:33 #nder:52
#ndie:32 #ndin:-33 #ndio:-29 #ndly:29 #ndre:99 #nero:-32 #news:57 #nezc:33 #ngan:-53 #nger:-150 #ngin:-124 #niev:-52
#nigh:-45 #nimo:43 #nina:-34 #nior:74 #niva:40 #nles:89 #nmen:36 #nobo:-38 #noma:52 #nost:42 #noth:42 #nque:33
#nqui:42 #nsaj:-29 #nsta:66 #ntas:-37 #nted:71 #ntes:-43 #ntet:67 #ntio:32 #ntos:-79 #ntro:-46 #nuev:48 #numb:74
#nume:149 #nunc:56 #nute:-31 #nvoi:-69 #nyth:36 #obod:-38 #obra:130 #obro:-90 #ocke:88 #ocks:31 #ocup:62 #ofer:31
#offe:-55 #oice:-69 #oing:39 #okin:47 #olla:35 #olso:-32 #oman:-49 #omas:89 #omes:55 #ompl:-34 #ompr:57 #onea:32
#oney:-55 #onge:-109 #ongo:33 #opco:-34 #open:-40 #ople:-33 #oral:40 #oran:-32 #orge:32 #orit:-81 #orma:50 #orni:-34
#orro:-51 #osed:-39 #oser:-44 #osit:65 #ossi:-33 #osti:59 #osto:138 #otal:79 #otea:35 #oted:-62 #othe:-40 #otiz:180
#oubl:-35 #ough:79 #ould:68 #ound:-101 #oupo:35 #oure:-33 #ousa:52 #ouse:35 #ousi:-57 #outs:42 #outu:-30 #over:79
#owar:34 #owin:45 #oxim:52 #pads:50 #paga:-41 #pago:-98 #pagu:-79 #paid:-103 #para:88 #pare:-30 #park:100 #pasa:72
#pase:51 #paso:-74 #pass:-51 #payi:51 #pcor:-34 #peac:-74 #peci:200 #pend:35 #pens:37 #pent:-39 #peop:-33 #pera:-33
#perd:-106 #pero:-48 #phon:-35 #pick:78 #pide:108 #pier:-42 #plac:57 #plat:53 #plic:-29 #plie:-32 #plis:48 #pock:91
#poco:49 #podr:45 #poin:-43 #pone:41 #pong:61 #ponl:112 #pons:51 #popc:-34 #pose:-33 #pped:-52 #ppen:-43 #ppli:-32
#ppos:-33 #ppre:-45 #prec:128 #pres:97 #prev:-32 #pric:289 #pris:41 #prox:51 #pued:-49 #puer:-47 #puro:-41 #quea:70
#quen:-57 #quin:32 #quis:40 #quot:88 #raba:-36 #rage:-32 #rake:63 #rale:40 #rand:-70 #rani:41 #rant:55 #raro:-67
#rate:59 #rath:30 #rati:114 #rato:-115 #razy:-47 #rcha:33 #rdan:32 #rdar:-98 #rden:-72 #rder:-43 #rdid:-29 #rdon:-35
#read:-76 #reak:-57 #real:63 #reci:52 #reco:-61 #recu:36 #reem:-32 #reen:31 #reet:-29 #reew:-31 #refu:-94 #remi:54
#renc:-41 #rent:-67 #repl:-59 #rero:-38 #resa:-37 #rese:30 #reso:50 #ress:-53 #resu:62 #reve:-45 #revi:41 #rged:-93
#rgen:-45 #rges:-30 #rget:32 #rgin:100 #rice:50 #rici:229 #rifa:55 #righ:41 #rios:55 #ripp:-32 #rise:43 #rite:-81
#rito:120 #rkin:-33 #rnin:-33 #roke:-45 #rong:-67 #ront:55 #room:-52 #rose:-42 #ross:30 #roug:83 #roxi:52 #rpri:43
#rque:-31 #rren:-30 #rsda:31 #rter:52 #rtir:-32 #rush:-47 #ruts:128 #rvic:49 #sabe:50 #said:52 #saje:-32 #sald:36
#same:66 #sand:45 #satu:29 #save:43 #savi:37 #says:-54 #sban:49 #scho:-37 #scou:46 #scri:-39 #scue:125 #seas:38
#sela:-29 #self:-35 #sell:43 #seni:74 #seri:88 #serv:48 #sett:57 #shar:29 #shed:-29 #shoc:31 #shop:-93 #sint:67
#sion:75 #sist:37 #sito:58 #sity:66 #sive:43 #skip:-80 #snow:-98 #sobr:-39 #sold:34 #sons:41 #sort:29 #spec:198
#spen:-59 #sper:-117 #spet:50 #spot:-59 #spue:-61 #sque:33 #ssin:-35 #stad:-50 #stal:66 #stam:42 #stan:29 #stea:-30
#stee:187 #stil:65 #stim:161 #ston:35 #stor:-95 #stra:-42 #stre:-30 #stru:89 #stud:41 #stuf:-32 #stuv:-30 #sube:68
#subi:38 #suel:49 #supp:-67 #supu:52 #tado:-58 #talk:38 #tall:30 #tamo:34 #tant:75 #tard:-179 #tari:97 #tart:50
#tary:29 #teac:-41 #tean:35 #tech:-51 #tell:154 #tene:-57 #tera:35 #tere:33 #tery:81 #teti:67 #that:49 #them:-68
#thes:54 #thou:62 #thre:34 #thur:-35 #tiem:-89 #till:62 #tima:109 #time:-67 #tint:-37 #tion:-31 #tivo:29 #tiza:176
#toma:-147 #tory:-44 #tota:79 #towa:34 #towe:-49 #town:-45 #trab:-53 #trae:47 #tran:-63 #tras:43 #trea:-103 #trip:32
#trut:98 #tual:56 #tube:-30 #tude:42 #tura:-73 #turd:29 #tuvi:-31 #uand:-84 #uant:100 #uatr:39 #uble:-35 #ucks:-31
#ucti:-46 #uden:38 #ueal:62 #uebl:29 #ueda:-58 #uele:-40 #uelt:78 #uelv:-78 #uenm:-54 #uent:44 #uert:-45 #uest:56
#ugar:-31 #ught:-77 #uido:-35 #uinc:34 #uisi:39 #uldn:-37 #ulel:-29 #ulti:-54 #umbe:74 #umer:149 #unci:68 #unde:66
#undr:76 #unle:89 #unqu:33 #unta:38 #unte:-55 #uote:88 #uppl:-32 #uppo:-33 #upue:52 #uran:-107 #urch:60 #urda:29
#urge:-64 #urio:112 #ursd:31 #urst:29 #usan:-37 #usba:49 #usin:-57 #usto:-32 #utch:158 #uvie:-31 #vale:116 #vamo:-38
#vean:29 #vemo:52 #vent:-36 #vera:61 #verc:-37 #vere:39 #vert:29 #very:-63 #vete:40 #vici:30 #vida:-98 #visa:-42
#voic:-69 #vuel:-60 #wago:35 #wait:67 #want:113 #ward:34 #warr:54 #ways:-60 #were:-57 #what:263 #when:-102 #whic:-67
#whol:47 #wife:52 #wifi:-46 #will:77 #wing:73 #wise:41 #worn:-35 #woul:75 #writ:45 #xima:34 #youd:60 #yout:-30
#ythi:48 #zero:111 %again_later:-38 %again_later%agree:-41 %again_later%away:48 %again_later%bring:29
%again_later%busy:-75 %again_later%car_part:-54 %again_later%doubt:47 %again_later%elsewhere:35
%again_later%fails:-34 %again_later%how_long:129 %again_later%leak:-32 %again_later%machine:42
%again_later%meaning:45 %again_later%message:-37 %again_later%money:42 %again_later%on_way:-38
%again_later%opening:-37 %again_later%question:63 %again_later%refuse:67 %again_later%smoke_smell:-50
%again_later%thanks:-53 %again_later%who:30 %agree%away:-126 %agree%bad:65 %agree%car:-30 %agree%car_part:46
%agree%elsewhere:-40 %agree%fails:30 %agree%gone_car:54 %agree%how_long:-29 %agree%lift:47 %agree%machine:75
%agree%money:80 %agree%on_way:39 %agree%opening:-59 %agree%phone:-51 %agree%place:-56 %agree%question:57
%agree%season:36 %agree%shift_it:41 %agree%smoke_smell:-65 %away%bad:-52 %away%bring:-53 %away%call_off:-37
%away%car:-29 %away%car_part:34 %away%do_it:-70 %away%elsewhere:-36 %away%how_long:33 %away%leave_me:-33
%away%question:81 %away%start_again:38 %away%thanks:-30 %away%who:-29 %away%wrong_one:-53 %bad:-98 %bad%bring:-30
%bad%do_it:-63 %bad%elsewhere:52 %bad%meaning:99 %bad%money:-66 %bad%noise:34 %bad%question:-43 %bad%refuse:-44
%bad%wrong_one:39 %bring%call_off:51 %bring%do_it:99 %bring%how_long:-42 %bring%leak:-67 %bring%leave_me:-61
%bring%machine:30 %bring%money:70 %bring%pay_day:97 %bring%question:45 %bring%refuse:-47 %bring%season:36
%bring%staff:29 %bring%thanks:-37 %busy%car_part:57 %busy%gone_car:-42 %busy%how_long:50 %busy%on_way:-35
%busy%place:35 %busy%question:74 %busy%refuse:-52 %busy%wrong_one:70 %call_off:-67 %call_off%car:36
%call_off%car_part:-36 %call_off%do_it:51 %call_off%doubt:40 %call_off%elsewhere:-52 %call_off%gone_car:-119
%call_off%leave_me:-34 %call_off%lift:69 %call_off%money:81 %call_off%opening:-40 %call_off%question:66
%call_off%refuse:-44 %call_off%thanks:-46 %call_off%who:33 %car%do_it:32 %car%fails:-46 %car%gone_car:36 %car%leak:53
%car%leave_me:37 %car%on_way:-103 %car%pay_day:91 %car%phone:-35 %car%refuse:-41 %car%shift_it:52 %car%wrong_one:76
%car_part%do_it:121 %car_part%doubt:80 %car_part%family:41 %car_part%gone_car:43 %car_part%how_long:-38
%car_part%leave_me:37 %car_part%machine:44 %car_part%message:29 %car_part%money:136 %car_part%noise:54
%car_part%odometer:-30 %car_part%opening:57 %car_part%phone:81 %car_part%place:-55 %car_part%question:88
%car_part%shift_it:38 %do_it:-71 %do_it%doubt:43 %do_it%elsewhere:-67 %do_it%fails:46 %do_it%gone_car:-50
%do_it%meaning:-48 %do_it%message:35 %do_it%on_way:95 %do_it%opening:90 %do_it%pay_day:-29 %do_it%question:98
%do_it%refuse:52 %do_it%season:-100 %do_it%shift_it:87 %do_it%staff:-61 %do_it%start_again:-46 %do_it%wrong_one:-76
%doubt%elsewhere:51 %doubt%gone_car:-78 %doubt%how_long:87 %doubt%leak:37 %doubt%lift:41 %doubt%machine:67
%doubt%meaning:32 %doubt%money:-51 %doubt%on_way:-37 %doubt%pay_day:54 %doubt%question:45 %doubt%season:71
%doubt%shift_it:37 %doubt%smoke_smell:34 %doubt%wrong_one:47 %elsewhere%family:-92 %elsewhere%meaning:55
%elsewhere%message:-37 %elsewhere%money:-104 %elsewhere%odometer:-51 %elsewhere%on_way:-30 %elsewhere%phone:41
%elsewhere%refuse:57 %elsewhere%shift_it:45 %elsewhere%staff:-35 %elsewhere%wrong_one:-48 %fails:-58
%fails%how_long:-88 %fails%money:-62 %fails%odometer:29 %fails%question:106 %family%gone_car:-41 %family%how_long:-47
%family%message:42 %family%money:-65 %family%on_way:-36 %family%question:85 %family%refuse:73 %family%shift_it:-29
%family%start_again:83 %family%wrong_one:63 %gone_car%how_long:39 %gone_car%odometer:-50 %gone_car%on_way:-43
%gone_car%question:59 %gone_car%refuse:72 %gone_car%shift_it:29 %gone_car%start_again:48 %how_long:-216
%how_long%meaning:-73 %how_long%money:66 %how_long%on_way:-69 %how_long%pay_day:-34 %how_long%place:60
%how_long%question:-170 %how_long%refuse:-50 %how_long%shift_it:-99 %how_long%wrong_one:46 %leak:-35 %leak%money:-44
%leak%phone:-40 %leak%question:73 %leave_me:-88 %leave_me%money:37 %leave_me%on_way:-32 %leave_me%question:43
%lift:-118 %lift%money:-46 %lift%question:-48 %lift%refuse:62 %lift%who:35 %lift%wrong_one:47 %machine%meaning:-98
%machine%money:100 %machine%on_way:55 %machine%question:-98 %machine%staff:-38 %machine%wrong_one:-29 %meaning:-84
%meaning%money:187 %meaning%noise:31 %meaning%place:32 %meaning%question:-138 %meaning%refuse:-33 %meaning%season:31
%meaning%wrong_one:37 %message%question:-29 %message%refuse:50 %message%shift_it:30 %money:450 %money%odometer:51
%money%on_way:88 %money%opening:98 %money%pay_day:-50 %money%phone:158 %money%place:119 %money%question:167
%money%season:31 %money%smoke_smell:29 %money%staff:-44 %money%wrong_one:112 %noise%question:66 %noise%shift_it:-39
%odometer:-53 %odometer%question:-29 %odometer%staff:57 %on_way:40 %on_way%pay_day:-52 %on_way%phone:-50
%on_way%place:42 %on_way%question:-80 %on_way%shift_it:-32 %on_way%start_again:-63 %on_way%wrong_one:-38 %opening:-39
%opening%question:-42 %opening%refuse:37 %opening%shift_it:64 %pay_day%question:85 %pay_day%refuse:64
%pay_day%staff:-40 %pay_day%start_again:-76 %pay_day%wrong_one:41 %phone%refuse:65 %phone%shift_it:57 %phone%staff:68
%phone%thanks:67 %place:-43 %place%question:-124 %place%shift_it:37 %place%start_again:-34 %place%wrong_one:-71
%question:104 %question%refuse:33 %question%season:-93 %question%shift_it:91 %question%start_again:74
%question%thanks:99 %question%who:-73 %refuse%staff:-37 %refuse%start_again:-40 %refuse%who:29 %refuse%wrong_one:-83
%season:-61 %season%staff:29 %season%wrong_one:-39 %shift_it%start_again:34 %shift_it%thanks:-49
%shift_it%wrong_one:-32 %smoke_smell:-84 %staff:-102 %staff%start_again:-29 %staff%wrong_one:-42 %start_again:84
%start_again%thanks:-42 %thanks:-63 %who:-82 %who%wrong_one:-41 @?:219 @after_visit:-98 @confirm_stop:-32 @nothing:33
@odometer:-104 @reading:43 @walk_in:38 ^_a:68 ^_about:-31 ^_antes:32 ^_anything:-55 ^_are:93 ^_as:33 ^_ballpark:50
^_bank:-36 ^_both:49 ^_brakes:33 ^_call:71 ^_cancelen:-31 ^_cheers:37 ^_claro:43 ^_como:-71 ^_con:98 ^_cuanto:-177
^_cuantos:-33 ^_dale:46 ^_day:30 ^_de:-30 ^_dejame:-29 ^_depende:-62 ^_depends:112 ^_did:147 ^_do:49 ^_does:150
^_el:-49 ^_en:-87 ^_es:-93 ^_eso:51 ^_esta:-51 ^_first:-44 ^_for:-45 ^_found:-64 ^_free:-158 ^_fri:52 ^_gimme:43
^_give:69 ^_go:-54 ^_going:-30 ^_got:109 ^_gracias:36 ^_great:-49 ^_hacen:-31 ^_hasta:78 ^_hi:43 ^_hold:46 ^_how:-74
^_hoy:-47 ^_i:-132 ^_id:-39 ^_im:37 ^_in:-43 ^_is:160 ^_jueves:35 ^_kindly:29 ^_la:-34 ^_las:56 ^_last:86 ^_later:122
^_le:-31 ^_let:-40 ^_llamenme:31 ^_llevo:-29 ^_lo:35 ^_los:43 ^_lunes:45 ^_mas:110 ^_maybe:89 ^_me:32 ^_mi:-41
^_miercoles:34 ^_might:34 ^_much:-86 ^_need:90 ^_no:-93 ^_nomas:39 ^_not:-37 ^_now:56 ^_number:-58 ^_oh:-32 ^_ok:36
^_or:-46 ^_orale:40 ^_out:-39 ^_please:-51 ^_precio:47 ^_price:29 ^_primero:40 ^_puedo:-36 ^_pues:29 ^_quisiera:56
^_quote:52 ^_rather:33 ^_roughly:-36 ^_sale:-279 ^_salir:-83 ^_saturday:47 ^_sedan:50 ^_see:42 ^_si:-109 ^_so:57
^_still:-36 ^_sure:90 ^_te:-49 ^_tengo:-32 ^_thanks:-56 ^_that:-108 ^_the:-124 ^_tiene:30 ^_tienen:58 ^_time:-73
^_todavia:39 ^_todo:41 ^_too:-84 ^_trae:38 ^_two:73 ^_un:-35 ^_uy:-46 ^_va:-47 ^_we:-39 ^_what:-154 ^_which:-42
^_why:-86 ^_will:-29 ^_would:-37 ^_y:-73 ^_ya:67 ^_yo:-32 ^_your:-32 a:130 a__ahi:-39 a__and:-39 a__cuando:-33
a__cuanto:-31 a__el:112 a__first:60 a__for:156 a__hora:-44 a__is:71 a__la:45 a__lo:79 a__los:43 a__manana:34 a__o:-49
a__of:64 a__on:39 a__or:-42 a__para:-35 a__phone:-30 a__please:39 a__por:-32 a__sale:32 a__thing:-57 a__time:35
a__to:-99 a__un:-39 a__with:-35 a_battery:77 a_big:-54 a_cobrar:53 a_como:578 a_esas:-65 a_estar:-65 a_fee:103
a_hundred:96 a_la:-52 a_las:-206 a_light:-43 a_long:34 a_no:-39 a_number:233 a_quemado:-33 a_ser:71 a_set:59
a_tener:-38 a_tow:34 a_ver:63 about:-62 about_what:37 abran:-196 abran_$:-83 aceite_ya:33 across:34 across_the:34
add:72 afford:-31 afford_it:-31 after:54 after__you:-42 after_all:40 again_$:-58 again__it:56 again_and:41 agarra:29
agua:33 agua_por:34 aguanta:-30 ahead:42 ahead_of:71 ahi:-69 ahi_$:-59 ahora_en:32 aint:43 air:44 alcanza:94
algo_por:60 algun:29 alignment:59 alineacion:37 all:119 all_$:100 all__what:56 all_day:-75 all_good:37 alla:-55
alla_$:-45 alli:-49 already_$:34 also:69 alto:-47 am:47 am_$:-36 am__going:45 am__paying:62 am__talking:-34 am_i:107
am_not:-55 am_y:-70 an:121 an__and:50 an__change:57 an__day:-40 an_estimate:31 an_oil:47 and:103 and__does:46
and__i:91 and__is:96 and__much:92 and__one:-30 and__price:64 and_a:37 and_could:42 and_do:36 and_how:90 and_is:67
and_where:34 and_your:-32 anda:86 andamos:-30 ando:-41 ando_por:-41 another_$:34 antes_$:39 antes__que:-47 any:241
any__for:97 any__that:-34 any_coupons:51 any_idea:31 anything:36 anything_$:55 anything__that:29 anyway:37
anyway_$:56 app:-48 appointment__i:51 appreciate:36 appreciated:-81 aqui_$:38 are__charging:133 are__doing:-38
are__for:-46 are__talking:56 are_the:-32 are_they:-72 are_we:56 are_you:31 arm:76 arm_$:39 arreglan:-48 as_of:33
asi:-42 asi__no:-33 asi_que:-37 ask_me:-31 ask_my:37 at_$:-38 at__counter:30 at__it:52 at_a:33 at_is:67 at_it:31
at_me:30 at_what:-73 aunque:33 azul:70 b:31 bad:83 bad_$:-29 baje:-52 baje_la:-52 balatas:42 ballpark:132
ballpark_$:55 bank:-60 barato:57 battery:82 be:78 be_$:107 be__all:-32 be__day:-35 be__for:36 be__in:47 be__it:-29
be__to:-32 be_a:-78 be_after:82 be_before:-31 be_doing:-116 be_done:-33 be_over:84 be_ready:-45 be_the:-32 beat:88
been_done:39 before_$:-52 before__say:51 before_i:98 before_noon:-34 best:37 bet:-40 bien_el:32 bien_gracias:-29
big:-68 big_deal:-57 bill:-147 bill_$:97 bill_was:-121 billed:46 book:-39 both:29 both_are:-46 brake:41
brake_fluid:-60 brake_job:32 brake_light:46 brakes_$:42 brakes_squeal:40 break:-57 break_down:-58 bring_it:-42
bring_the:104 broke:-44 bucks:-31 budget_$:62 burst:29 but:-43 but__is:-57 but__it:39 but__me:48 but_how:29
but_the:-31 but_what:-47 by:-62 by_the:-29 cabin:-48 cabin_filter:-39 cada:-59 cae:-58 cafe:-47 cafe_$:-47
calienta:32 call_$:-35 call__with:68 calle:-32 cambio__aceite:36 cambio_de:-30 cambios:37 can:37 can__be:-33
can__get:45 can__me:38 can__my:76 can__with:-34 can_do:-31 can_it:-30 can_take:51 can_you:63 cancel:-42 cancelar:68
cancelela:52 cancelen:-31 cancelo:34 cant_make:41 car:-47 car__the:29 card:41 cargo:122 carro_$:-74 carros_$:29
cash:-74 cause:-33 change:77 change_$:-59 changing:-84 charge:126 charge_$:-35 charge_to:48 charged:-55
charged__for:-56 charged_me:-51 charging:105 cheaper:99 checking_$:-34 cheers:37 chiste:-49 chofer:31 cien:93
cien_$:93 cierren:-30 cierren_$:-30 claro__si:-40 clientes:-53 club:-50 clutch:-59 cobran:196 cobran_$:-62
cobran__por:70 cobran_algo:61 cobran_por:32 cobraron:-78 cobre:47 cobro:-90 come_$:-71 come__with:58 come_to:135
comes:49 coming__for:-34 coming_in:-40 como:35 como_$:115 como__me:-89 como__se:-66 como__y:99 como_a:-58
como_cuanto:-254 como_de:-29 como_el:70 como_la:31 como_lo:40 como_quedamos:69 como_sale:32 como_si:-45 compro:35
con:56 con__de:33 con_cuanto:45 con_ese:-34 con_la:75 confirmo:33 cosa:-36 cosa_de:-39 cost:255 cost_$:78 cost_and:65
costo:138 costo_y:87 could__a:39 could_i:-55 could_you:70 count:-39 count__in:-39 count_me:-39 counter:30 coupons:51
cover:50 covered:43 crazy:-47 creo:-45 creo_que:41 cual__la:49 cual_de:-42 cual_es:54 cuando:-84 cuando_cobre:31
cuando_lo:-32 cuando_me:29 cuanto:94 cuanto_$:62 cuanto__el:36 cuanto__es:-64 cuanto__eso:-61 cuanto__las:45
cuanto__lleva:-33 cuanto__lo:59 cuanto__mas:-33 cuanto__me:-152 cuanto__para:67 cuanto__por:57 cuanto__que:128
cuanto__queda:-147 cuanto__saldria:37 cuanto__tardan:-33 cuanto__voy:-53 cuanto__y:146 cuanto_anda:49
cuanto_cuesta:54 cuanto_demora:-88 cuanto_dura:-101 cuanto_era:121 cuanto_es:146 cuanto_mas:-143 cuanto_me:62
cuanto_por:204 cuanto_rato:-138 cuanto_sale:71 cuanto_se:-237 cuanto_seria:169 cuanto_tarda:-37 cuanto_tardan:-122
cuanto_tengo:80 cuanto_tiempo:-97 cuanto_toma:-152 cuanto_va:37 cuanto_vale:69 cuantos:-79 cuantos_dias:-62 cuatro:39
cuenta:-52 cuento:-29 curiosity:66 curious:31 da:63 dad:76 dale:46 damage:64 damage_$:55 dame:31 dar:32 day:-71
day_$:-50 day_job:29 days:42 days_$:110 de:118 de_$:77 de__a:-60 de__cierren:-30 de__de:57 de__dos:-31 de__es:52
de__esta:-35 de__hablamos:38 de__hora:73 de__lo:-43 de__me:-34 de__otro:31 de__son:48 de__y:-35 de_aceite:40
de_dinero:72 de_lo:52 de_los:-57 de_manana:37 de_pagar:-29 de_que:-57 de_trabajo:69 de_veras:31 de_vida:-76 deal:-135
deal_$:-73 deal_with:-81 dealer__it:-57 debajo:37 debajo_del:37 debo:31 deep:153 dejame:-31 dejan:36 dejar:32
dejo:-93 dejo_$:-75 del__a:34 del__de:53 del__y:30 deme:34 deme_el:35 demora:-77 demora_$:-60 depende:-62 depends:112
deposit:-46 deposito:45 descuento:92 despues:-61 despues_$:-29 despues_del:-32 dia:-99 dia_$:-42 dia_o:-87 dias:-93
dice:54 dicho:67 did:-61 did__for:-57 did__get:-82 did__in:-37 did__say:146 did_i:-32 did_it:-106 did_my:-82
did_that:48 did_the:30 did_you:70 diez:57 diga:48 digame:94 digame__precio:31 digame_cuanto:60 digame_el:34 digo:44
digo_$:31 dijeron_una:-37 dilatan:-95 dime:61 dime_el:58 dinero:-68 discount:49 ditch:35 do:35 do_$:-66 do__charge:55
do__do:-39 do__for:44 do__get:74 do__go:87 do__got:35 do__guys:73 do__have:-46 do__need:-49 do__owe:64 do__pay:94
do__take:-41 do__th:29 do__use:-36 do_i:102 do_it:30 do_the:40 doc:-34 does__cost:54 does_it:-64 does_my:37
does_the:29 doing:-69 doing_$:-94 doing__it:-39 doing_to:-39 dollars:40 dollars_$:118 donde__estan:-54 donde_estan:85
donde_mero:-54 dont__any:-30 dont__to:38 dont__what:-32 dont_have:41 dont_send:-30 door:66 dos:33 dos_dias:-34
double:-35 down:-33 down_on:-53 due:-110 due_for:-54 dura:-86 each:-62 early:43 early_$:69 eat:-39 eat_$:-39 echa:32
echa__azul:43 eggs:-73 either_$:30 el:77 el_$:-31 el__a:-70 el__antes:53 el__ayer:-34 el__como:-32 el__en:78
el__le:-31 el__me:-55 el__para:106 el__pero:-38 el__que:49 el__saliendo:32 el__taller:61 el__temprano:-36 el__ya:29
el_aire:-49 el_cambio:53 el_carro:34 el_costo:148 el_de:-37 el_dinero:-61 el_lunes:-51 el_martes:-31 el_otro:88
el_precio:93 el_recibo:-31 el_sedan:-65 el_seguro:-36 el_total:110 el_trabajo:-44 el_viernes:-32 elm:-55 else:-38
en:39 en__anda:45 en__de:-29 en__me:114 en__sale:73 en__se:-44 en_cuanto:76 en_enero:35 en_pie:-29 en_que:74 en_un:34
en_una:-36 end:74 ends:-36 enero:35 engine:-53 entre_semana:61 entro:-44 era:99 era_$:91 es:72 es__cuanto:48
es__de:46 es__o:33 es__y:-32 es_cosa:-39 es_de:-105 es_gratis:135 es_la:67 es_lo:37 es_por:-30 es_que:-50
es_rapidito:-29 es_un:-83 es_urgente:-50 es_y:102 esa:43 esa_no:36 ese:-51 ese_servicio:-38 eso:30 eso__es:-40
eso_es:91 eso_que:90 especial:77 espero:-100 espero_$:-97 esta:-42 esta__agua:37 estamos:34 estamos_hablando:38
estan:54 estan_$:-32 estar:-65 este_mes:63 estimado:98 estimado_$:-54 estimate:72 estimate_$:63 even__a:-34
even__it:46 even_is:-36 ever:69 factura:-52 falta:-69 falta_$:-72 favor_$:117 favor_y:-66 fee:219 feel:-40 fellas:-32
feria:-30 feria_$:-59 fifty:42 figure:79 fila:-46 filter:-50 final:109 fine:-39 fine__it:-29 five_$:49 fleet:45
fluid:-64 for:94 for_$:-66 for__brakes:36 for__days:109 for__in:44 for__is:-52 for__lol:52 for__of:-74 for__oil:-68
for__to:40 for_again:-51 for_all:117 for_an:-73 for_free:-55 for_it:-45 for_me:-57 for_that:79 for_these:109
for_this:70 for_tomorrow:-47 for_two:60 for_what:-115 forget:32 forget_it:32 found:-99 four_hundred:-71 free:174
free_$:208 free__my:-82 free_or:110 freeway:-31 frenos_$:-68 friday_$:-42 friday__ill:53 from:-96 from_the:-72
fue:-74 fuera:-35 gasto:-31 get:43 get__a:38 get_a:144 get_for:157 get_it:-44 getting:-53 gimme:43 gimme_the:51
give:60 give_me:30 go:43 go_$:-54 go__it:-58 go__the:-30 go_for:228 goes:39 going:107 going__need:32 going__say:33
going_on:52 going_to:63 gomas:37 gomas_$:32 gone:42 good_$:-57 good_to:32 got:-43 got_$:-29 got__of:-50 got__off:56
got_any:56 got_the:-42 got_to:51 goteando:35 gracias_$:-102 gracias__me:55 gracias_y:56 grand:-57 grand_$:-57
gratis:113 gratis_$:55 gratis_o:45 green:31 guys_have:71 gym:-33 hablan:-66 hablando:38 hableme_para:31 hace:103
hacerlo:-49 hacerlo_$:-49 hago:64 hago_$:111 hard:41 has:47 has_it:30 has_the:40 hasta__no:41 hasta_el:-32
hasta_que:30 have__number:-31 have__phone:33 have_a:-49 have_got:-44 have_never:-40 hay:90 hay_$:37 headlights:39
heck:-35 hicieron:-78 high:-32 high_$:-32 hitch:36 hizo:-48 hold:29 hold_off:49 hora:30 hora_de:48 hour_$:30 house:35
house_$:85 how:311 how__and:44 how__can:-29 how__days:-52 how__do:123 how__does:-68 how__for:38 how__hours:-45
how__how:72 how__i:-79 how__it:-84 how__longer:-117 how__of:-49 how__time:-183 how__times:-35 how__to:92 how__was:80
how__you:-63 how_about:-29 how_come:-175 how_do:-82 how_does:-30 how_is:-43 how_many:71 how_much:307 how_urgent:42
hoy:-59 hoy__las:-47 hoy_a:-47 huele:-33 huele__quemado:-33 huele_a:-32 hurt:68 husband:49 i:38 i__a:73 i__already:40
i__anything:70 i__do:-66 i__done:-31 i__early:87 i__for:63 i__got:-41 i__in:-46 i__it:-129 i__monday:36 i__my:44
i__not:-55 i__out:-62 i__swing:40 i__the:37 i__there:-59 i__up:29 i__what:45 i__with:-64 i__you:62 i_am:-55 i_ask:37
i_bring:45 i_can:74 i_go:-68 i_going:45 i_have:-49 i_mean:45 i_need:-48 i_never:-41 i_only:53 i_owe:128 i_paid:-35
i_pay:56 i_paying:62 i_say:51 i_skip:-61 i_talking:-34 i_turn:36 i_was:-44 i_would:-41 id_like:29 id_say:-32 idea:39
if__just:-33 if__skip:-61 if_i:51 if_it:-43 ill_do:44 im:-58 im__paying:-49 im_a:31 im_not:-57 in__am:49 in__and:-47
in__i:53 in__what:106 in_for:-47 in_march:50 in_the:-72 invoice:-69 is__address:-62 is__bad:-37 is__bill:105
is__brake:52 is__come:79 is__cost:44 is__do:-68 is__for:-116 is__free:79 is__going:33 is__i:-39 is__in:-31
is__inspection:33 is__is:90 is__it:32 is__labor:81 is__me:42 is__number:-71 is__oil:78 is__one:67 is__out:77
is__point:-53 is__price:70 is__really:72 is__run:231 is__still:195 is__street:-46 is__th:-35 is__than:-119
is__that:-36 is__to:-49 is__total:48 is__wifi:-46 is__yes:35 is__you:-43 is_a:-38 is_all:-29 is_an:118 is_been:29
is_due:-48 is_fine:-29 is_fixed:-30 is_for:-45 is_going:-74 is_it:134 is_on:-54 is_the:80 is_there:44 is_this:-81
is_too:-36 is_your:48 ish:68 it:99 it_$:-58 it__all:53 it__be:109 it__done:-33 it__due:-35 it__fine:-29 it__for:-39
it__free:79 it__if:70 it__me:80 it__my:-41 it__over:35 it__ready:-45 it__something:44 it__the:-49 it__then:-32
it__under:166 it__what:48 it__you:-52 it_a:-108 it_anyway:103 it_bad:-37 it_be:88 it_come:45 it_cost:37 it_do:-81
it_even:46 it_for:-83 it_in:-78 it_just:-38 it_on:57 it_run:128 it_still:164 it_takes:52 it_to:-32 it_today:41
it_was:87 it_what:-34 it_will:-40 it_wont:36 it_would:61 jaja_$:45 job:89 jueves:30 jueves__las:-34 jueves_a:-34
junta:-29 just:83 just__it:34 just__what:51 just_curious:31 just_phone:30 just_the:45 keep:-35 kept:-84 keys:-37
keys_$:-33 kindly:29 know:-60 know_$:-32 la__a:90 la__de:50 la__para:-42 la__por:-68 la_alineacion:32 la_cara:-57
la_factura:-52 la_hago:113 la_hora:67 la_manana:-50 la_nieve:-52 la_otra:97 la_pieza:-37 la_puerta:-45 la_revision:56
la_ultima:-52 la_van:-32 la_vez:31 la_voy:70 labor:117 labor_$:108 lado:40 las_$:-61 las__cuanto:36 las__hay:75
las__me:-59 las__no:-47 las__que:-57 las_balatas:30 las_cuatro:38 las_de:45 las_dos:94 las_gomas:31 las_llantas:32
las_y:-39 last:43 last_visit:-33 last_year:30 later:43 later_one:106 le:-97 le__a:-36 le__de:-41 le__el:-38
le__que:53 le__servicio:35 le_hace:32 le_pongo:37 le_queda:-43 le_sale:-33 leak_is:-30 leaks:36 left:-129 left_on:-50
left_rear:-33 les:-156 less:-69 let:-36 libre:33 life:-49 lift:-38 light__on:35 light_came:45 like_a:-60 like_the:38
line:59 live_person:33 llantas_nuevas:37 llegar_tarde:41 lleva:-32 llevar_$:56 llevo:48 llevo_$:32 lo:-80 lo__a:60
lo__manana:38 lo__que:144 lo_dejo:-83 lo_hace:40 lo_hizo:-40 lo_llevo:-36 lo_mismo:47 lo_necesito:-33 lo_que:-64
lol_$:-40 long:44 long_$:142 long__i:-29 long__it:-80 long__that:-30 long_is:-37 long_will:-70 longer:-116
longer_$:-33 longer__it:-83 look:-39 look_$:39 look__a:36 look__it:37 look_at:30 looking:75 looking_at:58 los:64
los__a:39 los_cambios:38 loss:-40 lost_my:-33 low:-51 lugar:-31 lunes__cuanto:-34 lunes__del:34 lunes_a:-36
lunes_pero:-39 make__today:41 makes:-63 mal_$:-37 mala:-34 manana__a:34 manana__del:-33 manana__las:29 manana_a:29
manana_despues:-33 mandame:36 mande:-39 many:71 many_days:-52 many_hours:-45 many_times:-35 march:35 marquenme:-33
mas_$:-38 mas__el:-29 mas__si:51 mas_barato:88 mas_de:162 matter:-70 matter_$:-70 maybe:32 maybe__month:58
maybe__summer:40 maybe_next:58 mayo:-34 me:61 me__about:53 me__ahi:-39 me__cuanto:53 me__dar:41 me__dont:-30
me__en:29 me__hace:40 me__hasta:-37 me__hizo:-40 me__i:-55 me__los:65 me__mas:-29 me__muy:74 me__nada:78 me__o:57
me__price:33 me__que:-100 me__si:30 me__sin:-35 me__todo:-50 me__was:-29 me__what:93 me__you:39 me_a:-35 me_and:-94
me_at:30 me_back:141 me_cobran:40 me_cobraron:-44 me_da:70 me_dice:58 me_diga:47 me_dijo:33 me_espero:-97 me_first:47
me_for:-101 me_friday:53 me_hace:40 me_hicieron:-49 me_it:107 me_la:-40 me_lo:-51 me_marca:-33 me_please:-30
me_puede:36 me_queda:71 me_quedo:-39 me_saldria:37 me_sale:104 me_salio:66 me_tengo:-47 me_the:125 me_tienen:-67
me_up:-37 me_van:91 me_voy:-46 me_vuelvan:-37 me_with:161 mean_$:38 media:-34 mejor:-62 mejor_$:-68 mejor__sabado:-32
menos:63 menos_$:-92 menos_que:63 mensaje:-42 mensaje_$:-37 mero:-39 mero_estan:-54 mes:55 mi__me:47 mi_nina:-34
mi_vecina:35 mientras:55 miercoles_me:36 might:33 mileage_$:39 milimetros:-43 mind:-54 minivan:40 mismo:43
mismo_que:63 monday_or:-47 monday_please:37 money:-48 money_$:-84 money_wise:80 month_$:-73 more_$:-36 more__i:87
mornin:-31 mother:-36 much:214 much_$:65 much__a:39 much__how:51 much__i:29 much__is:-94 much__it:103 much__look:70
much__my:-94 much__the:90 much_for:95 much_is:149 much_longer:-117 much_of:-94 much_time:-183 much_to:116 mucho_$:30
must:-44 muy:-61 muy_caro:-52 my:-54 my__a:38 my__are:-59 my__back:-34 my__be:29 my__go:-81 my__going:29 my__has:41
my__in:31 my__is:-130 my__one:-29 my__will:37 my_appointment:58 my_bill:-200 my_dad:76 my_husband:37 my_invoice:-39
my_last:66 my_morning:-79 my_mother:-36 my_phone:-40 my_sister:38 my_warranty:58 my_way:50 n:104 n_how:46 nada:44
need_$:-41 need__know:62 need_a:63 need_it:-41 need_to:55 needs:-38 never__me:65 new:42 new_tires:-34 news:57 ni:-35
ni_la:-29 nieve:-52 nina:-34 no:73 no__and:40 no__aunque:43 no__cuanto:46 no__de:71 no__el:35 no__en:35 no__ir:33
no__is:-156 no__it:97 no__last:-35 no__me:-55 no__of:34 no__que:41 no__vuelvan:-37 no__was:37 no__what:45 no__who:36
no__you:34 no_agarra:38 no_but:77 no_creo:-39 no_gracias:-48 no_i:50 no_la:-49 no_me:51 no_mi:48 no_puedo:44
no_quiero:30 no_tengo:31 no_thank:34 no_thanks:55 no_the:-30 no_traigo:-32 no_wait:36 no_what:-154 nobody:-38
nomas:52 noon_$:-36 not:-110 not__after:46 not__i:56 not__that:-33 not__to:-47 not_a:29 not_at:-97 not_the:39
not_till:62 now:-55 now_$:-40 nuevas:38 number:68 number_$:54 number__the:65 number_before:55 number_out:-33
numero_de:-33 o:89 o__es:-112 o__no:36 o_cuanto:-61 o_hay:44 o_que:44 o_si:55 ocupo_$:67 of__morning:-46 of__what:-40
of_a:-38 of_all:39 of_it:-44 of_my:-120 of_that:-34 of_the:50 of_this:29 of_those:39 off_$:-68 off__i:56 off__my:49
oh:-37 oil_change:103 ok:-92 ok_$:-82 ok__is:-32 ok__it:58 ok_is:63 on__is:-75 on__the:-41 on__tires:-71 on__way:56
on_it:-32 on_that:67 on_the:-78 on_them:-80 on_your:80 one:-40 one__and:-33 one__much:103 only__the:55 or:195 or_$:75
or__i:36 or__it:-34 or__that:54 or_do:49 or_friday:-47 or_is:-45 or_no:69 or_what:-60 orale:40 orale_si:40
otra__que:-30 otra_vez:35 otro__me:65 otro_taller:60 our:33 out:76 out_$:-31 out__door:74 out_for:-39 out_of:92
out_the:63 over:-36 overcharged:-37 overcharged_me:-35 pads:50 pads_$:40 pagar:-38 pago:-41 pagos:-48 pague:-97
pague_$:-29 paid:-72 paid_$:-42 par:85 para:34 para__de:-32 para__del:47 para_cuando:45 para_las:-41 para_no:29
para_que:-64 para_una:33 partes:42 pasa:46 pase:52 pasela:-29 paso:-74 paso_$:-96 pay:-35 pay_$:96 payin:77
people:-33 perdida:-29 perdida_total:-29 pero:52 pero__cuanto:-49 pero__el:30 pero__que:-29 pero_de:34 peso:-37
phone:-54 phone_$:-52 phone__with:40 phone_and:-30 phone_me:41 pick:65 pick__up:112 pick_up:-41 pie:-29 pieza:-37
pin:-39 place:76 plan_$:29 please:64 please_$:90 please_and:48 please_do:-41 please_dont:-30 pleased:-55 plis:48
plis_$:48 pocket:91 point:-52 pone:32 pongo:33 popcorn:-34 por:198 por__cambio:65 por__del:37 por__me:-29 por__se:29
por__tarde:40 por__y:-132 por_debajo:37 por_donde:-31 por_el:31 por_todo:-60 precio:247 precio_$:57 precio__me:34
precio_de:81 precio_que:107 precio_y:47 pregunta:32 presupuesto:62 price:173 price_$:65 price__the:44 price_and:69
price_on:35 prices:-33 pricey:-81 primero:35 primero_$:-37 pueda:-70 pueda_$:-70 puede:37 puede__el:55 puede_ser:-31
puedo__con:-31 puedo_pero:40 puerta:-45 puerta_$:-45 puro:-39 put_in:31 que:-91 que__caro:147 que__de:-42 que__el:30
que__es:-29 que__ese:-37 que__gracias:-33 que__llame:-30 que__lo:39 que__me:-35 que__mi:-31 que__otra:45
que__otro:-43 que__para:33 que__saber:40 que__tiene:-29 que_cierren:-30 que_cobran:-80 que_el:-44 que_es:-67
que_falta:30 que_hay:31 que_la:145 que_llevar:30 que_lo:52 que_pasa:-37 que_se:29 que_tan:61 que_tanto:150 queda:-31
queda_$:-51 queda_bien:34 queda_de:-43 quedamos:79 quedan:-33 quedo_sin:-39 quemado:-47 quemado_cuando:-33 quien:-36
quien_es:-45 quiero:43 quiero_ir:41 quiero_saber:84 quisiera:56 quote:149 quote_$:-125 quoted:-62 rapidito:-29
rate:63 rather:30 rather_talk:33 rato:-171 rd:-36 rd_$:-29 reading:-33 really:49 really_$:-37 really_free:68 rear:-30
recibo:-32 reembolso:-32 refund:-91 refund_$:-62 remind:63 remind_me:63 rent:-59 revisan:-34 revision:56 right_$:67
right_now:-40 ring:-51 ripped:-32 rough:85 roughly_how:-36 run:313 run_$:156 run_it:-53 run_me:78 rush:-47 saber:72
saber_cuanto:48 saber_si:-37 sacar:55 said:52 said_$:78 sale:-75 sale__barato:73 sale_mas:96 sale_un:-29 sale_y:57
salgo_$:34 salida:-40 saliendo:29 salio:43 salir:-31 same:78 sat:73 sat_am:38 sat_morning:-30 saturday:38
saturday_$:-39 saturday_at:50 saturday_morning:39 save:43 saving:37 say:83 say_anything:61 says:-54 school:-37
se:-136 se__con:-47 se__en:-31 se__mucho:43 se_calienta:32 se_lleva:-33 se_lo:-30 se_pueda:-70 se_queda:44
se_tardan:60 see:-54 see__tomorrow:42 see_what:-34 sell:43 semana:30 semana_$:30 send:39 send__a:38 send_me:33 ser:54
ser_$:36 seria:163 seria_$:54 serious:-32 servicio:30 set:86 set__back:100 set_me:81 set_of:59 shocks:31 shop:-93
should__be:-32 should_i:64 si:118 si_$:-30 si__a:-49 si__en:-42 si__la:52 si__lo:-57 si__mas:71 si__me:-55 si__que:50
si__voy:38 si__y:57 si_como:-30 si_en:-29 si_es:-32 si_gracias:57 si_la:-41 si_le:75 si_nomas:60 si_quiero:-33
si_yo:59 siento:-31 sigue__pie:-29 sigue_en:-29 siguiente:40 sin:-37 sin_carro:-39 sintetico:67 sister:38 sit:-32
six:-32 skip:-75 skip_it:-61 snow:-98 so_far:38 so_i:42 so_like:36 so_much:-109 so_no:-32 sold:34 someone__me:57
someone_phone:33 son:34 son__de:71 sort:29 spot:-59 spot_to:-40 squeal:30 st:36 still:73 still_$:159 still__on:59
still_good:-72 stop_$:-33 stop_the:38 street:-29 street_$:33 strut:-30 struts:128 sube:70 sunday:-29 sundays:43
sundays_$:30 supposed:-33 supposed_to:-33 sure:48 sure__it:101 sus:-75 ta:-37 take:-68 take_me:42 takes:52 talking:45
talking_$:-71 talking_to:-34 taller_me:61 tan__es:78 tan__estan:-29 tan_caro:146 tantito:-29 tanto:123 tarda:-38
tardan_mas:-43 tardan_mucho:50 tardan_y:39 tarde:50 tarde_$:40 tardo:-39 tax:79 tax_$:79 te_digo:41 tel:42 tell:143
tell__the:64 tell__what:-50 tell_me:79 tempranito:41 temprano:-39 tener:-38 tengo__llevar:74 text_$:52 th_and:61
than__i:-46 than_the:-41 thank__so:-34 thanks__is:33 that:49 that_$:-128 that__be:-39 that__been:38 that__it:-38
that__like:77 that__me:62 that__to:139 that_be:42 that_going:80 that_i:-41 that_one:-29 that_the:48 that_works:52
that_would:-39 the:88 the__again:97 the__and:62 the__before:77 the__how:50 the__i:-35 the__in:43 the__is:-87
the__job:30 the__not:38 the__number:37 the__or:50 the__place:-44 the__says:-32 the__service:49 the__the:50
the__thing:-36 the__to:-31 the__was:-55 the__what:38 the__with:-98 the__you:-37 the_address:-42 the_alignment:30
the_appointment:-29 the_bank:-44 the_belt:-32 the_bill:181 the_brakes:-31 the_cost:58 the_counter:30 the_damage:37
the_dealer:66 the_door:68 the_house:45 the_inspection:49 the_last:-32 the_left:-56 the_next:30 the_oil:-36
the_other:36 the_place:53 the_quote:-116 the_repair:38 the_same:-29 the_school:-37 the_service:31 the_st:38
the_th:-31 the_tires:-72 the_two:44 the_wife:52 them:-68 them_$:-88 there__fee:103 there__no:-38 there__to:-41
there__you:34 there_a:80 there_all:-32 there_are:35 these:54 these_$:-37 these_days:142 they__me:30 they__to:-32
thing:-67 this_morning:33 this_number:-92 this_one:88 this_time:33 though:41 though_$:44 thousand:-50 three:52
thurs_works:39 thursday:31 thursday_$:-56 thursday__the:41 thursday_and:41 thursday_is:56 thursday_works:-31 tie:-31
tiempo:-58 tiempo_me:-36 tiene:36 tienen__el:-37 tienen__para:-30 tienen_el:54 til:57 til_my:49 till_i:62 time:-74
time_$:50 time__i:-82 time__it:-88 time__you:-38 time_do:-53 time_i:-29 time_it:83 times:-38 to:39 to_$:51 to__a:30
to__after:51 to__all:-43 to__and:-41 to__at:57 to__for:-94 to__it:-65 to__my:40 to__next:-86 to__out:71 to__the:103
to__there:-35 to__to:70 to__what:-34 to_a:-29 to_be:-71 to_come:34 to_fix:41 to_go:30 to_it:-57 to_know:29
to_look:101 to_make:-29 to_my:-30 to_need:29 to_pay:-58 to_see:-29 to_sell:64 to_set:36 to_stop:36 to_tell:35
to_wait:54 toda:-42 toda_la:-50 today_$:-38 todo_$:56 todo_y:-34 told_my:-29 toma:-100 toma_$:-81 tomorrow_is:-39
too:-170 too__for:-68 too_much:-81 total:124 total_$:37 tow:29 tow_hitch:29 toward:34 town:-33 trabajan:-37 trae:51
tread:-104 tuesday__is:48 tuesday_at:62 two:60 two_$:60 two_hundred:42 ultima:-52 ultima_vez:-38 un__antes:53
un__de:66 un__en:34 un__y:-52 un_cambio:-43 un_estimado:147 una__de:34 una__y:-56 una_hora:-29 under:82 under_$:106
under_my:64 unless:89 unless__is:88 unless_it:88 up:44 up__is:70 up__me:69 up_for:-51 up_what:34 urgente:-50 use_a:39
usted:-45 ustedes_$:70 uy:-46 va:48 va__salir:42 va__ser:29 va_a:82 va_el:-35 vale:130 vale_$:71 vamos:-38
vamos_$:-43 van__cobrar:82 van__tener:-50 van_a:44 vean:29 vecina:35 vecino:-31 vemos:52 vemos_$:34 veras:31
verdad:37 verdad_$:87 very:-79 very_much:-79 vez_$:44 vez__me:-37 vez_pasada:31 vida:-76 video:-30 viernes__que:31
viernes_de:31 viernes_y:30 visit:-33 voy:56 voy__de:34 voy__estar:-68 voy__que:38 voy_con:41 vuelvan:-37
vuelvan_a:-37 wagon:35 wait:95 wanted:74 warranty:54 was:-61 was_it:60 was_the:51 way:52 way_to:-29 we_talking:83
we_will:-54 week:-46 weekends:55 were:-57 what:68 what_$:-144 what__an:151 what__are:-49 what__do:-35 what__i:126
what__is:-129 what__it:-29 what__my:148 what__said:33 what__that:-94 what__the:44 what__this:-29 what__was:-68
what__you:65 what__your:80 what_a:-47 what_am:90 what_are:65 what_did:-46 what_do:162 what_even:-32 what_for:-84
what_i:-116 what_should:71 what_time:-48 what_will:98 what_would:288 when:-102 when__get:-41 when__turn:36 when_i:-31
when_my:38 when_you:-41 where__are:39 where__at:34 where_you:31 which:-68 who:-32 who__this:-38 whole:47 why:-78
why__it:35 why_does:47 wife:52 wife__the:41 wife_has:41 wifi:-46 wifi_$:-46 will:77 will__be:56 will__need:-37
will_be:-32 will_i:50 will_it:86 will_you:-39 wise:41 wise_$:130 with_a:47 with_an:37 with_tax:89 wont__over:49
wont_be:42 works__me:39 worn:-35 would:62 would__have:52 would_i:-63 would_it:57 would_like:-36 would_that:96
would_the:67 wow:-46 y:204 y_$:-37 y__a:42 y__bien:-29 y__cuanto:65 y__digo:54 y__dura:-50 y__estan:117 y__hace:31
y__por:91 y__se:73 y_a:61 y_como:-96 y_cuanto:91 y_de:74 y_donde:53 y_en:57 y_eso:70 y_lo:37 y_me:45 y_media:-34
y_no:-75 y_por:-36 y_si:47 y_te:55 y_tiempo:76 y_tienen:-35 y_vemos:30 y_ya:-44 ya__el:59 ya__la:-31 ya__los:31
ya__toca:35 ya_con:91 ya_de:-81 ya_ni:-29 ya_no:33 year:31 yes:-52 yes_$:-129 yes__and:81 yes__how:35 yes__i:-51
yes__is:47 yes__it:61 yes__the:-35 yes__what:-51 yes_can:-44 yes_is:69 yes_please:37 yet:72 yet_$:73 you:-49
you_$:-66 you__and:29 you__before:56 you__did:-37 you__for:251 you__get:73 you__have:71 you__it:98 you__know:-38
you__look:29 you__me:-95 you__much:-35 you__my:-112 you__or:120 you__take:36 you__that:-48 you__was:-30 you__your:-40
you_at:34 you_be:-102 you_bet:-40 you_charge:67 you_charged:-37 you_charging:132 you_do:52 you_doing:67 you_ever:67
you_get:36 you_got:35 you_have:-31 you_just:29 you_lost:-33 you_need:-67 you_never:50 you_people:-33 you_put:-29
you_said:38 you_say:91 you_send:36 you_so:-34 you_think:-32 you_to:39 you_told:-77 you_tomorrow:42 youd:60 your:41
your__have:-32 youre:-33 yours:-35
"""
