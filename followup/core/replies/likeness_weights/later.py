"""What speaks for and against `later`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "later"
BIAS = -133
WEIGHTS = """\
#able:-50 #ablo:111 #abor:58 #abov:66 #abri:46 #abro:88 #acab:87 #acac:52 #acei:-47 #acem:54 #acho:57 #acia:-45
#acke:-39 #acks:38 #adas:59 #adel:50 #adin:64 #ador:43 #ados:56 #adre:-39 #adua:42 #afra:59 #afte:-37 #agos:53
#agua:-64 #ahor:162 #aiga:42 #aigo:62 #ains:-46 #aint:-39 #aire:-49 #airp:55 #ajar:36 #ajes:-40 #alat:71 #alcu:-41
#alda:41 #ales:71 #alga:76 #alin:74 #alls:-50 #ally:86 #almo:36 #alqu:-78 #amba:-40 #amen:-44 #amos:94 #ampe:63
#anas:57 #ance:83 #ande:46 #ando:103 #anej:-70 #aniz:182 #anks:-37 #anme:40 #anne:81 #anos:-106 #anta:-38 #ante:50
#anti:99 #ants:57 #anul:62 #anza:46 #apen:60 #appe:-44 #apre:44 #apri:52 #apun:-44 #aqui:-69 #arca:-50 #arch:55
#arde:-49 #ardl:36 #ares:85 #arge:-36 #aria:-101 #arke:85 #arla:69 #arlo:-49 #arly:-52 #arms:109 #aron:-128 #arri:-41
#arte:-39 #arti:55 #arve:87 #arzo:196 #asad:-118 #asan:105 #asen:39 #ashe:39 #asle:56 #asse:-59 #atas:37 #aten:-51
#athe:62 #atie:49 #atin:-62 #atio:57 #atro:53 #atte:49 #atur:-39 #augu:60 #aunq:59 #auto:-116 #aver:59 #avid:40
#avin:97 #avis:228 #avor:-76 #away:-99 #aybe:66 #ayda:103 #ayer:-36 #ayin:48 #babe:42 #bame:42 #band:139 #bank:-39
#banm:102 #been:48 #belt:69 #betw:54 #biam:-77 #biar:-41 #bici:-65 #bier:-41 #bill:-45 #birt:40 #blam:103 #blan:-65
#blem:-36 #bles:70 #blow:-39 #boda:40 #bols:-92 #bono:72 #bonu:83 #book:81 #born:74 #bove:66 #bowl:45 #brak:37
#brar:-61 #braz:62 #brer:58 #bril:61 #budg:44 #burn:46 #busc:137 #busq:50 #busy:57 #cabe:133 #caci:36 #cada:-52
#cado:-40 #calc:-83 #calv:62 #came:-63 #cami:-45 #canc:61 #cant:137 #capa:75 #care:-45 #carn:50 #casa:46 #ceit:-47
#cela:56 #cele:100 #cemb:44 #cena:42 #char:-66 #chec:143 #ched:44 #chip:65 #chni:57 #cial:57 #cias:-40 #cidi:59
#cien:-120 #cier:68 #cked:-75 #cker:-76 #ckup:40 #clas:-104 #clie:52 #cloc:-38 #coge:-47 #coin:-111 #cole:-52
#coll:41 #coma:-44 #come:37 #comm:87 #cond:-91 #cort:98 #cost:-68 #coul:-46 #covi:51 #crap:55 #crib:44 #cted:-42
#ctob:62 #ctor:43 #ctub:70 #cual:-69 #cuar:77 #cuen:-70 #cuer:67 #cupa:75 #cupo:-59 #dame:58 #darm:53 #date:-38
#days:75 #ddle:43 #deal:72 #deci:36 #deep:48 #deja:59 #deje:115 #dela:52 #dele:-42 #deme:118 #depl:82 #dese:40
#desp:44 #dget:44 #dian:50 #didn:-49 #dien:60 #dier:-49 #dies:-38 #digo:162 #dijo:-55 #dill:38 #dimo:-94 #dine:61
#dios:71 #dire:173 #dles:62 #dlin:-36 #doce:-55 #doct:43 #dogs:-39 #dolo:-66 #dont:57 #door:-36 #down:38 #drop:-71
#dshi:-36 #each:67 #eadi:64 #eali:41 #earl:-56 #earn:38 #ease:-45 #eath:88 #eavi:-51 #ebre:59 #ecem:44 #ecen:66
#echn:57 #ecib:-61 #ecie:41 #ecio:-66 #ecki:-46 #ecks:50 #ecor:46 #ecue:65 #edan:-40 #edes:-47 #edir:43 #eels:-36
#eemb:-86 #eezi:61 #egan:-63 #egle:42 #egre:58 #egue:78 #egui:69 #egun:62 #eite:-47 #ejam:77 #ejan:-135 #ejar:-86
#ejem:110 #ejen:-86 #ejor:68 #elan:76 #elar:-40 #elel:54 #eliz:-96 #ella:-49 #elli:-61 #elts:78 #elva:76 #elve:40
#elvo:74 #embe:83 #embo:-86 #embr:86 #emen:53 #emin:62 #emos:108 #empi:56 #empo:100 #empr:-88 #enas:54 #ence:42
#encu:-82 #endi:-76 #ends:68 #enen:-84 #engi:-41 #engo:66 #enlo:-48 #enme:121 #enoj:66 #ensa:128 #ensi:-43 #ente:47
#ento:66 #ents:-61 #enty:-52 #eone:-53 #epai:46 #eplo:82 #eque:-38 #equi:-51 #eran:40 #erco:-63 #erda:57 #erha:41
#eria:55 #erio:66 #erle:-39 #ermi:83 #erne:-49 #eron:-130 #eros:-57 #erse:89 #ervi:-40 #escr:74 #esda:-50 #eses:109
#espe:-40 #espo:-64 #espu:44 #este:124 #esti:-47 #esto:78 #eter:-43 #etic:-38 #etim:-83 #ettl:63 #etwe:54 #even:-73
#ever:-177 #eves:-77 #evis:103 #exas:-48 #exts:-65 #ezco:-47 #ezin:61 #falt:58 #favo:-76 #febr:49 #feli:-104
#fell:-57 #feri:100 #ffic:-47 #fice:-47 #fies:38 #fift:39 #fina:100 #find:45 #fine:-89 #firm:80 #firs:68 #fixe:-60
#floj:64 #fond:-38 #foot:38 #form:-42 #foto:-57 #fren:-66 #fres:43 #frid:-99 #frio:-38 #fter:-37 #gast:85 #gent:-57
#gery:61 #ghts:-42 #gift:62 #gine:-41 #girl:-60 #give:95 #givi:-37 #gost:53 #grac:-40 #grav:47 #gres:58 #gual:-60
#guan:-65 #guen:56 #gues:-67 #guir:42 #gunt:94 #habl:128 #hago:54 #hang:83 #hank:-41 #happ:-39 #haps:41 #harg:-36
#harv:87 #hast:-39 #have:53 #hday:40 #head:-43 #heav:-66 #heca:49 #heco:83 #hice:-45 #hiel:-36 #hnic:57 #holl:55
#home:85 #hond:36 #hone:-71 #hool:74 #hoos:-72 #hopp:63 #hora:104 #hori:41 #horr:40 #hosp:59 #hoto:37 #houg:54
#howi:-36 #hubb:72 #hung:36 #hurs:-74 #iado:-37 #iamo:-77 #iaro:-45 #ibam:42 #iban:36 #icel:38 #ices:-42 #icey:-67
#icks:-45 #icku:41 #idad:41 #iday:-65 #iddl:57 #idnt:-49 #iece:56 #ield:-36 #iemb:79 #ienc:46 #iene:-44 #iera:-36
#ierc:-52 #iero:-106 #ifty:56 #igan:-40 #ight:74 #igua:-60 #igue:40 #iles:51 #illi:51 #imav:59 #imos:-109 #inal:98
#inch:-43 #inco:70 #inda:95 #inds:-36 #iner:50 #ings:65 #inte:-36 #into:-44 #ione:74 #irad:-40 #irmo:83 #irpo:55
#irst:68 #irth:40 #isar:-85 #isca:42 #isen:67 #isit:92 #itas:38 #ivin:-54 #ixed:-60 #ized:-37 #jado:38 #jaja:-62
#jala:71 #jame:76 #jand:-106 #janu:36 #jeme:109 #jenl:-53 #jove:42 #juev:-77 #june:155 #junt:157 #just:36 #kick:103
#kill:92 #kind:103 #knee:70 #labo:58 #lace:-52 #lala:57 #lama:-57 #lamb:52 #lamm:38 #lamo:52 #lann:81 #lant:37
#lase:-53 #lass:-39 #last:-92 #late:43 #latt:88 #lcom:-42 #lcul:-41 #lear:66 #leas:-41 #leep:44 #left:42 #lege:41
#legu:86 #lela:58 #lele:-48 #leno:-40 #lent:-59 #lets:74 #levo:54 #lice:44 #lide:-40 #lien:75 #life:50 #ligh:-70
#ling:86 #liqu:45 #lita:-41 #live:-92 #livi:52 #llam:-88 #lled:-42 #lleg:81 #llev:38 #lock:-41 #lojo:65 #look:120
#lost:36 #loye:38 #lqui:-78 #lueg:73 #luga:-50 #lune:-40 #lver:40 #make:-73 #malo:-41 #mane:-79 #mant:-59 #mart:-63
#marz:196 #mati:-71 #mave:59 #mayb:66 #mayo:79 #mbia:-70 #mbio:70 #mbol:-86 #mbra:39 #mbre:56 #mejo:68 #mela:-40
#menm:-53 #mens:-52 #ment:203 #meon:-53 #mero:49 #mese:110 #meti:-115 #midd:57 #mier:-52 #mija:-37 #mind:44 #mine:43
#ming:37 #mmer:48 #mmit:87 #mome:278 #mond:-68 #mone:48 #more:-43 #most:48 #moto:79 #moun:-40 #mpad:-38 #mped:62
#mpla:53 #mple:38 #mpor:71 #mpre:-70 #much:38 #myse:-38 #nals:50 #navi:40 #ncel:46 #ncen:42 #nces:-36 #nche:-63
#ncia:54 #ncom:65 #ncue:-82 #ndam:61 #ndel:-41 #nder:-49 #ndim:-85 #ndio:-36 #ndol:-68 #ndra:36 #ndsh:-36 #ndur:36
#near:79 #need:36 #neja:-67 #nero:70 #neve:-50 #nfir:80 #nfor:-40 #ngan:-66 #nged:-57 #ngin:-37 #nico:-41 #nion:-42
#nlos:-51 #nner:58 #noch:67 #noja:67 #none:36 #noon:-62 #noth:-65 #novi:75 #nowe:36 #nque:66 #nsaj:-54 #nsan:110
#nsar:277 #nsig:42 #ntam:125 #ntar:134 #nten:104 #nter:-63 #ntes:41 #nths:59 #ntie:-55 #ntin:39 #ntit:98 #ntra:73
#ntre:-73 #ntry:49 #nuar:36 #nudg:142 #nuev:52 #numb:-47 #nume:-62 #nunc:-56 #nzan:42 #ober:62 #oble:-61 #obra:-53
#obre:66 #ocat:-38 #oche:67 #ocke:-64 #octo:105 #octu:70 #oday:83 #odil:38 #offi:-47 #oint:-76 #ojad:67 #ojal:110
#oked:-39 #olan:-37 #olen:-39 #oles:-58 #olle:83 #olls:42 #olso:-86 #olve:40 #omen:95 #omeo:-53 #omes:103 #omet:-91
#ommi:87 #ompa:-51 #ompi:-57 #once:100 #onda:-90 #onde:-47 #ondo:-71 #oney:47 #onfi:69 #ongo:40 #onig:119 #onus:83
#ooke:-39 #ools:42 #oose:-70 #open:-100 #oper:74 #orad:88 #orar:46 #oras:52 #orda:49 #orit:36 #orme:-38 #orqu:-64
#orra:-53 #orre:-36 #orro:59 #orry:-85 #orta:44 #osas:-53 #ospi:59 #osto:43 #othi:-51 #oton:40 #otor:49 #otra:40
#otro:-52 #ough:38 #oure:-41 #ours:72 #ouse:46 #oved:-37 #oven:42 #over:45 #ovid:43 #ovie:89 #owin:-51 #oyed:38
#pado:80 #padr:-38 #pago:74 #pair:47 #pald:41 #para:86 #park:63 #pasa:36 #pase:72 #pass:-119 #payd:103 #payi:52
#pect:-39 #pens:122 #pera:130 #perh:41 #peri:60 #phon:-79 #phot:37 #pick:76 #pido:-91 #pier:-62 #pisc:42 #piso:-44
#plan:72 #plat:63 #play:94 #plea:57 #plen:-53 #ploy:82 #poco:48 #poin:-76 #pond:-104 #pone:-45 #pong:48 #ponl:-79
#pora:90 #port:59 #poso:41 #post:79 #pped:-55 #pran:-44 #prec:-44 #preg:94 #pret:44 #pric:-103 #pril:52 #publ:47
#punt:-61 #putt:-39 #quen:37 #quer:-71 #quie:-61 #quiz:90 #rada:70 #rade:-105 #radu:46 #raig:81 #rain:-44 #rake:37
#rame:60 #ramo:86 #rand:-83 #rani:42 #rari:43 #rass:48 #rato:-37 #rave:49 #raya:-49 #razo:62 #rcha:-72 #rcol:-52
#rdad:47 #rdar:51 #reac:78 #read:71 #reca:-63 #reci:-71 #reck:59 #recu:79 #reem:-86 #regr:58 #regu:82 #remi:62
#repa:52 #repl:-52 #repo:51 #rero:58 #resp:-106 #resu:95 #reta:66 #revi:105 #rezc:-47 #rgan:130 #rgen:-42 #rger:61
#rhap:41 #rian:-37 #riba:48 #rice:-66 #rick:-50 #rida:-78 #rier:60 #righ:63 #ring:-48 #riod:61 #risk:37 #riti:38
#rked:73 #rmin:67 #rned:-44 #rner:45 #rnes:-37 #road:78 #rodi:38 #romp:-57 #rong:-42 #ront:-36 #rpor:46 #rque:-84
#rren:-58 #rsda:-38 #rsea:96 #rtar:67 #rter:37 #rtes:-39 #rthd:40 #rtin:54 #rtos:-36 #ruck:-81 #rumb:56 #rush:37
#rves:87 #sabe:47 #sado:-47 #said:51 #saje:-41 #sale:-70 #salg:70 #save:51 #savi:142 #says:84 #scho:74 #scra:47
#scri:41 #sday:-89 #seas:135 #seda:-56 #segu:62 #self:-53 #seme:78 #semo:45 #senm:83 #sent:-79 #sept:56 #sera:140
#serv:-47 #sett:46 #shes:39 #shie:-37 #shop:76 #siem:-45 #sign:-75 #sigo:45 #sigu:50 #sinc:-48 #sing:-47 #site:53
#sito:42 #sits:-37 #sitt:45 #size:-37 #skip:-42 #slam:38 #slee:44 #slid:-40 #slot:-36 #snow:44 #sons:-38 #sorr:-80
#spac:-49 #spal:41 #spon:-140 #spos:39 #spue:44 #ssed:-55 #stan:-76 #star:68 #stas:50 #sted:-97 #ster:85 #stic:-38
#stil:-52 #stim:71 #stol:-42 #stop:-36 #stoy:80 #subi:-47 #suel:115 #summ:48 #sund:47 #supe:49 #supp:56 #surg:47
#swam:63 #swee:45 #tado:42 #take:-76 #tale:-42 #talk:89 #tall:-59 #tame:113 #tamp:40 #tand:101 #tant:44 #tara:92
#tari:-65 #tarl:57 #tarm:-47 #taro:71 #tart:39 #tech:66 #tede:-47 #tell:75 #teng:94 #tenm:41 #tent:-52 #term:87
#texa:-48 #thda:40 #then:126 #they:-51 #thin:69 #this:58 #thou:64 #thre:-39 #thur:-74 #tigh:94 #tima:-51 #time:38
#tina:-36 #tion:36 #tira:-50 #tiro:43 #tito:107 #tmrw:87 #tobe:62 #toca:-46 #toda:38 #told:43 #tole:-39 #toni:119
#took:-69 #tore:55 #town:61 #trad:-47 #trai:84 #tran:-40 #tras:74 #tree:-52 #tric:-50 #trip:-99 #tron:73 #truc:-84
#tter:70 #ttle:40 #tubr:70 #tues:-67 #tura:-40 #twee:54 #twic:-62 #uall:43 #ualq:-78 #uant:-50 #uare:94 #ubby:72
#ubli:47 #ubre:63 #ucho:69 #udas:59 #udge:179 #uebl:82 #uede:-36 #uego:73 #uelv:192 #uena:-53 #uenm:41 #uent:-70
#uerd:67 #ueri:-44 #uesd:-47 #uess:-67 #ueve:-123 #uevo:43 #ugar:-50 #ught:49 #ugus:60 #uido:36 #uien:44 #uier:-89
#uinc:51 #uite:63 #uito:-52 #uiza:90 #ulel:-37 #umbe:-50 #umer:-62 #umme:48 #unas:109 #unca:-56 #unda:54 #unde:-36
#undo:-53 #unes:-40 #unic:-38 #unos:146 #unqu:59 #unte:86 #unto:48 #untr:49 #upad:73 #uper:63 #uppo:64 #uras:36
#urge:38 #ursd:-38 #usco:123 #ushe:-40 #usqu:50 #uste:-122 #utom:-71 #utti:-41 #vaca:74 #vamo:-81 #vemo:56 #vend:-54
#veni:-62 #vent:39 #vera:83 #vers:98 #very:60 #vest:87 #vice:42 #vici:-39 #vido:-52 #viem:75 #vien:42 #ving:115
#visa:54 #vise:89 #visi:81 #viso:91 #volv:37 #vuel:67 #wait:50 #wamp:63 #want:100 #weat:57 #week:63 #ween:54 #weet:45
#went:-94 #were:73 #when:134 #wher:-62 #wice:-62 #wife:57 #will:106 #wind:-36 #wing:-62 #wint:-42 #wont:41 #work:-45
#wrec:59 #writ:75 #wron:-42 #xima:-40 #yday:103 #year:-55 #ying:68 #your:-95 #ysel:-38 #zing:61 %again_later:307
%again_later%away:108 %again_later%bad:-36 %again_later%bring:38 %again_later%busy:75 %again_later%call_off:107
%again_later%car:118 %again_later%car_part:-83 %again_later%do_it:138 %again_later%doubt:108
%again_later%elsewhere:67 %again_later%fails:71 %again_later%family:105 %again_later%gone_car:42
%again_later%how_long:-88 %again_later%leave_me:59 %again_later%lift:-48 %again_later%machine:-55
%again_later%money:181 %again_later%pay_day:64 %again_later%phone:-66 %again_later%refuse:151 %again_later%shake:-38
%again_later%shift_it:77 %again_later%thanks:-193 %again_later%who:-47 %agree:-40 %agree%away:-75 %agree%bring:-119
%agree%busy:-42 %agree%car:54 %agree%car_part:72 %agree%doubt:-41 %agree%family:54 %agree%gone_car:63
%agree%leave_me:83 %agree%meaning:-44 %agree%message:85 %agree%on_way:-72 %agree%pay_day:-104 %agree%phone:87
%agree%question:-95 %agree%refuse:94 %agree%staff:68 %agree%thanks:-46 %agree%wrong_one:-66 %away:251 %away%bring:60
%away%busy:37 %away%call_off:103 %away%car:76 %away%gone_car:-75 %away%how_long:-66 %away%lift:-65 %away%money:-36
%away%noise:-47 %away%odometer:-40 %away%opening:83 %away%question:126 %away%refuse:-106 %away%season:-96
%away%staff:-60 %away%start_again:-52 %away%who:-49 %away%wrong_one:43 %bad%bring:106 %bad%busy:132
%bad%elsewhere:-60 %bad%how_long:-36 %bad%lift:-37 %bad%meaning:-74 %bad%on_way:62 %bad%pay_day:-54 %bad%shift_it:-52
%bad%start_again:41 %bring%car_part:-67 %bring%do_it:-50 %bring%doubt:87 %bring%elsewhere:-88 %bring%fails:48
%bring%gone_car:-49 %bring%how_long:-40 %bring%leave_me:52 %bring%lift:-40 %bring%money:64 %bring%noise:-51
%bring%odometer:-75 %bring%pay_day:40 %bring%phone:117 %bring%question:-94 %bring%season:105 %bring%shift_it:46
%bring%smoke_smell:80 %bring%thanks:39 %busy:176 %busy%call_off:51 %busy%doubt:-38 %busy%fails:53 %busy%family:-64
%busy%gone_car:210 %busy%how_long:113 %busy%lift:87 %busy%on_way:-59 %busy%pay_day:55 %busy%phone:-37
%busy%shift_it:-88 %busy%start_again:79 %busy%wrong_one:88 %call_off%car:-55 %call_off%car_part:-108
%call_off%fails:51 %call_off%how_long:37 %call_off%leak:-45 %call_off%lift:-141 %call_off%message:-150
%call_off%odometer:-72 %call_off%opening:-43 %call_off%pay_day:-81 %call_off%question:38 %call_off%season:107
%call_off%shift_it:-72 %call_off%smoke_smell:44 %call_off%who:89 %car:-87 %car%car_part:-36 %car%family:-57
%car%gone_car:-69 %car%leave_me:-72 %car%lift:71 %car%message:-69 %car%odometer:82 %car%place:69 %car%question:60
%car%start_again:-40 %car%wrong_one:50 %car_part:-86 %car_part%doubt:38 %car_part%elsewhere:72 %car_part%how_long:42
%car_part%leave_me:134 %car_part%money:87 %car_part%noise:-59 %car_part%on_way:-75 %car_part%phone:-108
%car_part%place:-48 %car_part%question:-64 %car_part%refuse:114 %car_part%season:85 %car_part%smoke_smell:-53
%car_part%start_again:-96 %car_part%thanks:38 %do_it:-154 %do_it%doubt:109 %do_it%elsewhere:-112 %do_it%gone_car:-49
%do_it%meaning:45 %do_it%pay_day:-72 %do_it%phone:56 %do_it%smoke_smell:56 %do_it%staff:43 %do_it%start_again:115
%doubt:133 %doubt%elsewhere:-57 %doubt%fails:-40 %doubt%family:53 %doubt%lift:81 %doubt%message:97 %doubt%money:-66
%doubt%odometer:119 %doubt%on_way:104 %doubt%place:-52 %doubt%question:39 %doubt%refuse:63 %doubt%season:128
%doubt%staff:54 %doubt%wrong_one:-71 %elsewhere:-48 %elsewhere%fails:69 %elsewhere%family:44 %elsewhere%gone_car:-54
%elsewhere%how_long:-62 %elsewhere%lift:83 %elsewhere%message:-76 %elsewhere%odometer:135 %elsewhere%refuse:-58
%elsewhere%season:50 %elsewhere%shift_it:-77 %elsewhere%staff:-49 %fails:-69 %fails%gone_car:-44 %fails%machine:36
%fails%money:78 %fails%odometer:-53 %fails%place:-62 %fails%refuse:-50 %fails%wrong_one:66 %family%money:45
%family%on_way:93 %family%place:-52 %family%refuse:-54 %family%shift_it:-63 %family%start_again:153 %gone_car:-115
%gone_car%how_long:181 %gone_car%lift:53 %gone_car%message:68 %gone_car%on_way:-56 %gone_car%season:80
%gone_car%shift_it:-140 %gone_car%start_again:-44 %how_long%lift:50 %how_long%message:48 %how_long%odometer:105
%how_long%refuse:54 %how_long%season:-78 %how_long%shift_it:-88 %how_long%thanks:-38 %how_long%wrong_one:-49
%leave_me:-60 %leave_me%message:-40 %leave_me%money:59 %leave_me%odometer:96 %leave_me%on_way:50 %leave_me%opening:50
%leave_me%pay_day:-37 %leave_me%phone:-60 %leave_me%place:60 %leave_me%question:58 %leave_me%season:54
%leave_me%shift_it:-75 %leave_me%wrong_one:63 %lift:-45 %lift%money:-63 %lift%pay_day:-126 %lift%season:-275
%lift%shift_it:89 %lift%wrong_one:71 %machine%money:49 %machine%question:60 %machine%refuse:68 %meaning:-55
%meaning%pay_day:92 %meaning%season:-79 %message:-124 %message%odometer:-43 %message%on_way:60 %message%pay_day:-67
%message%question:82 %message%season:81 %message%start_again:-41 %message%thanks:-56 %message%wrong_one:-39
%money%noise:67 %money%odometer:-51 %money%pay_day:75 %money%question:-37 %money%season:214 %money%shift_it:-42
%money%wrong_one:56 %noise%pay_day:46 %noise%question:-47 %noise%season:68 %noise%start_again:-37 %odometer%on_way:45
%odometer%opening:46 %odometer%phone:-50 %odometer%question:115 %odometer%season:-56 %odometer%shift_it:163
%odometer%staff:50 %odometer%thanks:40 %odometer%wrong_one:-55 %on_way:-68 %on_way%pay_day:102 %on_way%question:-96
%on_way%refuse:67 %on_way%season:117 %on_way%start_again:97 %on_way%thanks:-66 %opening%question:-77
%opening%refuse:-42 %opening%season:46 %pay_day:302 %pay_day%phone:-36 %pay_day%question:159 %pay_day%refuse:130
%pay_day%shift_it:95 %pay_day%staff:-39 %pay_day%start_again:40 %pay_day%who:48 %pay_day%wrong_one:118 %phone:-145
%phone%refuse:-60 %phone%season:269 %phone%shift_it:-80 %phone%staff:-68 %phone%start_again:63 %phone%who:86
%phone%wrong_one:133 %place:-77 %place%refuse:38 %place%shift_it:64 %question:-60 %question%season:108
%question%smoke_smell:-47 %question%thanks:-60 %refuse:-73 %refuse%season:146 %refuse%shake:-40 %refuse%shift_it:-116
%refuse%staff:-105 %refuse%start_again:-156 %refuse%thanks:-69 %refuse%wrong_one:-68 %season:266 %season%shift_it:122
%season%staff:-61 %season%start_again:130 %season%wrong_one:115 %shake:-47 %shift_it%staff:53
%shift_it%start_again:-67 %shift_it%thanks:-64 %smoke_smell%start_again:54 %staff%start_again:47
%start_again%wrong_one:-104 %who:-90 %wrong_one:-61 @?:-123 @after_visit:-142 @car:-136 @confirm:-259
@confirm_stop:-154 @later:338 @nothing:-188 @offers:-79 @reading:-113 @time:-102 @times:-124 @walk_in:-69 ^_a:-76
^_about:-79 ^_after:244 ^_aguanta:-156 ^_ahora:113 ^_al:203 ^_already:-43 ^_ando:70 ^_antes:-58 ^_apenas:84 ^_are:-46
^_ask:79 ^_at:74 ^_ay:-51 ^_back:64 ^_book:80 ^_borren:36 ^_call:-46 ^_can:-47 ^_cancel:-39 ^_cancelar:-56 ^_cant:67
^_como:-48 ^_con:-56 ^_cuando:123 ^_cuanto:-103 ^_day:-46 ^_de:51 ^_deja:108 ^_dejame:85 ^_deje:232 ^_dejeme:110
^_despues:86 ^_do:-101 ^_dont:49 ^_el:-52 ^_en:162 ^_end:-49 ^_es:-52 ^_eso:-100 ^_estamos:76 ^_este:49 ^_estoy:81
^_first:-67 ^_gimme:37 ^_go:-69 ^_got:81 ^_had:-59 ^_hang:140 ^_hey:-55 ^_hold:76 ^_how:-105 ^_i:-42 ^_ill:56
^_im:-99 ^_in:54 ^_is:-100 ^_it:-41 ^_just:63 ^_kinda:59 ^_la:-91 ^_later:40 ^_le:-164 ^_lease:-41 ^_les:-110
^_let:162 ^_lets:-42 ^_lo:127 ^_los:-45 ^_luego:132 ^_manana:49 ^_marca:97 ^_mas:187 ^_maybe:75 ^_me:-91 ^_mejor:-94
^_mi:50 ^_might:-52 ^_miles:40 ^_money:66 ^_my:-91 ^_need:90 ^_next:106 ^_ni:-59 ^_ninguno:48 ^_no:42 ^_nomas:-73
^_none:36 ^_not:210 ^_oh:-65 ^_on:84 ^_once:81 ^_opt:-46 ^_otra:-55 ^_otro:82 ^_please:-64 ^_primero:40 ^_puedo:-141
^_put:60 ^_que:-208 ^_quien:-48 ^_quit:39 ^_ring:-57 ^_sale:-37 ^_salgo:44 ^_saliendo:57 ^_scrap:51 ^_se:-79
^_si:-192 ^_sitting:39 ^_someone:-44 ^_soon:36 ^_sorry:-65 ^_st:-50 ^_stolen:-39 ^_sure:-150 ^_swamped:69 ^_talk:-41
^_tell:-41 ^_tengo:181 ^_the:-97 ^_they:-36 ^_this:-72 ^_todavia:52 ^_todo:67 ^_too:154 ^_totaled:-38 ^_trade:-75
^_trae:-39 ^_truck:-63 ^_try:101 ^_va:109 ^_wait:92 ^_waiting:99 ^_were:65 ^_what:-105 ^_when:192 ^_whenever:39
^_where:-40 ^_wow:-55 ^_y:-87 ^_yeah:-80 ^_yo:95 ^_you:-128 a_$:54 a__can:-67 a__cita:-38 a__con:68 a__el:-70
a__en:-42 a__escuela:42 a__horas:-41 a__is:-86 a__mil:161 a__nada:-36 a__ninos:-52 a__now:-106 a__of:-119 a__one:45
a__or:62 a__otra:-36 a__so:58 a__the:-40 a__thing:40 a__time:156 a__weekend:-40 a__weeks:169 a_baby:41 a_bird:-36
a_bit:114 a_call:-59 a_esas:-41 a_fee:-37 a_few:132 a_good:132 a_las:-78 a_los:44 a_lot:72 a_mi:-66 a_mis:-57
a_number:-41 a_que:108 a_ring:-43 a_ver:61 a_while:57 about:56 about__tires:60 about_it:83 about_the:37 above:66
abril:61 ac:-47 aca:-53 acabe:100 acabe_la:49 aceite:-47 adelante_$:-99 after_$:-70 after__day:81 after__th:-165
after_i:-89 after_tax:38 after_work:-50 after_you:-63 again_$:-190 again_in:119 again_next:45 again_on:61 agosto:53
aguanta:-155 ahi_le:49 ahora:115 ahora__puedo:41 ahora_no:209 ahora_si:-45 ahorita__la:-36 ahorita__puedo:76
ahorita_en:-36 ahorita_no:193 aire:-49 aire_$:-47 airport:55 airport_$:73 al__de:66 al__que:90 al__y:52 al_mes:-46
al_rato:84 al_trabajo:-83 all:-65 all_$:-46 all__for:-44 all_set:-45 alla:-41 alta:-42 alta_$:-45 am:-46 and:-81
and__dont:38 and__get:39 and__long:53 and__much:50 and_cant:43 and_how:103 and_ill:-45 and_not:-78 anda:-48
andamos:44 ando:203 ando__en:-41 ando__la:61 ando_bien:136 ando_fuera:52 ando_por:-45 ando_sin:56 ano:71 ano_nuevo:52
anos:-72 antes__que:-59 antes_de:-56 any:-87 apenas:60 april:52 aqui:-49 are:128 are_$:-47 are__the:65 are_in:128
arregle:43 as:-48 as_a:-37 as_the:61 as_well:-57 asi:-117 asi_$:-76 asi_que:52 ask:373 ask__again:51 ask__in:95
ask_me:215 ask_then:45 asleep:56 at:69 at_$:134 at__lake:42 at__moment:66 at__the:-39 at__time:77 at_all:-37
at_home:-57 at_i:96 at_k:141 at_my:-73 at_the:53 at_this:67 august:60 aunque:59 auto:-45 avisa:60 avisar:-78
avisar_que:-61 avisenme:95 aviso:76 aviso_$:100 aviso_que:-54 away:-99 away_from:-70 ay:-50 ayer:-36 back:-63
back_$:-103 back__for:60 back__i:-63 back__me:37 back__my:61 back__the:-47 back__you:69 back_from:171 back_on:-56
back_to:56 back_when:-57 bad:-61 baje_la:52 bajo:-37 balatas:37 bank:-39 be:-48 be__it:50 be__the:-48 bed:69 been:48
been__for:-59 better_$:56 between:54 bici:-66 bien_$:-100 bien_las:68 bien_lo:48 bien_no:-78 bird:-36 birthday:40
bit:126 boda:40 bono:72 bonus:83 book:81 borren:-40 boss_is:36 both:-39 bother:65 brake:46 brake__flush:37
brake_fluid:37 break:-36 bring_it:43 broke:39 brother__law:-38 brother_in:-38 budget:44 budget_$:-93 buen:82 bug:117
bug_me:117 bus:-85 busco:123 busco_$:136 busy:57 but__much:58 but_dont:69 but_how:58 but_i:-38 but_im:43 buy:-46
by:52 by_$:-70 by_my:38 cabin:41 cada:-52 caiga:49 caigo:-60 caigo_$:-49 call_$:-52 call_me:-71 call_my:-42 cambia:40
cambiaron:-45 cambio:69 came:-47 can__a:39 can__call:-64 can__come:-49 can__get:-74 can__leave:43 can__tell:139
can__the:81 can__wait:-142 can_do:44 can_i:36 can_it:-163 can_we:39 cancel:-51 cancelar_$:-47 cancele:68 cancele_y:47
cancelela:54 cant:108 cant__about:36 cant__in:-56 cant_come:-78 cant_drive:67 cant_get:63 cant_think:36 car__at:54
car_is:47 care:-50 care_of:-40 carro_esta:67 cars:36 casa:46 chance:65 changed:-57 changed_$:-48 check:61
check__in:-42 check__me:90 check_with:134 checking:-46 checks:50 checks_$:57 checo:83 choose:-72 christmas_$:97
ciento:-70 cierto:65 cliente:52 cobraron:-44 cobre:66 college:41 come:61 come__it:51 come_at:75 come_friday:-39
come_in:-70 comes:103 commit:87 como_$:-45 como__las:-44 como__se:44 como_a:-41 como_cuanto:40 compadre:-38
con__carro:42 con__no:38 con__trabajo:-43 con__y:-41 con_el:80 con_mi:120 confirmo:83 confirmo_$:81 contento:-39
contesto:53 corto:36 corto_de:41 cosas:-53 cost:-55 could_you:51 country:49 covid:51 cualquier:-59 cualquier_dia:-59
cuando__de:106 cuando__la:113 cuando__no:-36 cuando_llueve:-36 cuando_lo:-96 cuando_paso:-57 cuando_regrese:72
cuando_tenga:61 cuando_tengan:-100 cuando_termine:53 cuando_vuelva:88 cuanto__el:36 cuanto__la:51 cuanto__lo:-60
cuanto__tengo:-51 cuanto_es:36 cuanto_me:-131 cuanto_rato:-68 cuanto_se:78 cuanto_tengo:-41 cuantos:39 da:-65 dan:79
date:-38 daughter__the:44 day:-42 day_$:73 day_after:-89 day_is:-50 days:64 de:46 de_$:-40 de__con:-36 de__el:-49
de__es:74 de__esta:44 de__la:44 de__lista:45 de__no:122 de__otra:-54 de__que:-77 de__se:-57 de__semana:-53
de_adelante:-50 de_ahi:-44 de_alta:-42 de_dinero:86 de_eso:96 de_hacer:-37 de_los:55 de_marzo:-66 de_mes:-45
de_pagar:69 de_que:-89 de_thanksgiving:-90 de_vacaciones:43 de_vuelta:-41 december:44 december_$:44 deep:48 deja:136
dejame:74 dejar:-89 deje:82 deje_a:-75 dejeme:109 dejenlos:-45 del_$:-47 del__para:-39 del__que:45 del_super:53
deme:84 den:43 denme:52 depends:36 depends_on:40 deployed:38 despues:44 despues_$:79 despues__las:-85
despues_del:-144 di:-49 dia:39 dia_$:-55 dia__la:-46 dia__que:37 dia_de:37 dia_me:47 diciembre_$:-92 did:-48
didnt:-49 dieron:-37 digan:-38 digo:163 digo_$:151 dijo:-55 dime_el:39 dinero:61 dinero_$:114 dios:71 dios_quiere:74
do_$:38 do__need:-64 do__open:-61 do__want:62 do_i:-118 do_it:133 doc:81 doce:-55 dogs:-39 donde_mero:66 dont:57
dont__it:80 dont__me:-78 dont__to:-60 dont_have:65 dont_know:89 dont_think:-45 dos:-52 dos__que:-45 dos_semanas:-39
down:72 down__road:59 down_the:76 drive__a:61 drive_for:61 driving_$:106 drop:-69 drop_it:-39 early:-54 eh:51
el__a:-41 el__ando:39 el__cuando:51 el__de:-48 el__despues:-71 el__dia:-54 el__el:-37 el__ese:-48 el__esta:66
el__la:-85 el__le:38 el__les:110 el__marzo:-58 el__mes:121 el__para:115 el__pasado:-74 el__pero:63 el__que:-54
el__si:-61 el__sigue:50 el__todo:-67 el__y:-40 el_aire:-47 el_ano:77 el_aviso:-39 el_carro:39 el_de:-108
el_despues:-52 el_income:78 el_jueves:-77 el_martes:-44 el_numero:42 el_otro:116 el_pedal:-40 el_sabado:-53
el_seguro:-47 el_telefono:45 el_trabajo:-39 en:121 en_$:-62 en__dias:45 en__el:-66 en__escuela:-61 en__me:-73
en__mes:39 en__momento:-69 en__noche:86 en__par:-41 en__por:43 en__que:61 en__si:88 en__tarde:-70 en__trabajo:45
en__y:93 en__ya:-47 en_abril:37 en_casa:50 en_diciembre:-93 en_dos:-63 en_el:-72 en_enero:58 en_eso:-82 en_este:-43
en_junio:49 en_la:-102 en_marzo:67 en_medio:37 en_mil:129 en_noviembre:89 en_otra:44 en_paz:-84 en_que:-133 en_un:-42
en_una:-57 en_unos:91 end__the:-47 ends:44 enero_$:-72 engine:-37 entre:-45 entre_semana:-43 es:-107 es__el:-36
es__o:-37 esa:-68 esas_horas:-41 escribame:42 escriban:-62 escribanme:102 escribo_$:94 escuela_$:46 ese:-83 eso:-59
eso_$:-70 eso__lo:-39 eso_del:37 eso_se:-37 espacio:-47 espacio_$:-38 espalda:41 esperando:-37 espere:-40 espero:-36
espero_$:39 esposo:41 esposo_$:47 esta_bien:-54 esta_semana:81 estan_$:-37 estaria:-68 estaria_$:-53 este_mes:117
este_momento:-43 estoy:79 estoy_de:59 estoy_manejando:-95 ever:-170 ever_$:-117 every:43 every__days:-44 fall_$:46
fall_off:-67 faltan:44 favor:-76 favor__me:-49 favor_que:-80 febrero:58 febrero_$:55 fee:-41 feel_like:37 feliz:-96
fell:-38 feria:101 feria_$:100 few:169 few_weeks:68 fiestas:38 fifty:56 fin__mes:-45 finals:50 find:44 find_a:54
fine:-89 fine_$:-39 fine_but:-43 first:68 first_$:133 fixed:-60 fluid_flush:36 flush:37 fondo:-38 fondo_$:-38 for:48
for_a:62 for_again:-36 for_it:135 for_me:-119 for_my:52 for_now:49 for_sure:-39 for_the:36 for_tomorrow:-42
for_two:52 forget_about:65 foto:-57 found_$:-50 friday:-87 friday_$:-65 frio:-38 frio_$:-38 fui:-73 gas:88 gastar:75
get:73 get__on:110 get__to:103 get_a:-37 get_back:145 get_me:-50 get_my:50 get_paid:106 get_the:-61 get_to:44 gift:62
gimme_a:54 girl:-60 give:95 give__a:48 go:-67 go_on:-69 going__run:-61 going_on:88 golpe:44 gone:38 got:69 got_a:-54
got_it:-84 got_the:41 got_to:236 gracias:-40 gracias_por:-48 grave:47 guess:-67 gusto_$:49 habla:-38 hablamos:92
hablamos_$:110 hablando:-64 hablo:111 hablo_$:61 hace:-70 hacer_en:-49 had_to:-40 hago:54 hang:104 hang_on:76
harvest:87 has:-46 has__car:45 has__now:-44 has__on:-64 has_the:41 hasta:-39 hasta__cobre:64 hasta__hora:-50
hasta__me:58 hasta__otro:60 hasta_entonces:58 hasta_las:-59 hasta_que:317 have__on:-76 have__service:59 have__this:90
have_time:164 have_to:-43 havent:43 hay_chance:-40 hay_que:56 he:-40 her:-39 here:96 hermana:36 hes:41 hey:-56
hice:-45 his:-48 hit:99 hit__up:125 hit_k:43 hit_me:124 hold_off:56 hold_that:93 hold_up:-79 holidays:41 holler:55
home:85 home__the:52 home_from:66 honduras:36 hora:-91 hora_$:-36 horario:46 horas_$:-64 hospital_$:85 hours:37
how__would:91 how_long:49 how_much:-54 hoy_$:-47 hoy_no:64 hubby:56 husband:40 i:-50 i__a:-38 i__do:44 i__down:-42
i__for:-42 i__friday:-38 i__get:39 i__have:-54 i__it:-60 i__like:37 i__my:-40 i__no:-41 i__out:-112 i__paid:106
i__something:59 i__the:-47 i__to:89 i__wait:48 i__you:170 i_ask:-41 i_be:63 i_can:60 i_cant:-83 i_come:-64 i_dont:-37
i_got:-36 i_just:-54 i_let:113 i_need:136 i_never:37 i_said:87 i_think:-50 i_want:-37 i_work:-49 i_would:65 id:100
id__it:36 id_sooner:44 if:-103 if_i:-37 if_my:37 igual:-46 ill:60 ill__it:78 ill__on:47 ill__out:37 ill__over:-72
ill__to:97 ill__you:62 ill_bring:42 ill_call:150 ill_do:66 ill_have:38 ill_need:-37 ill_wait:-42 im:113 im__a:-52
im__it:-52 im__of:108 im__the:94 im__work:-72 im_back:59 im_done:38 im_down:-49 im_on:50 im_out:85 im_still:-60
in:129 in_$:-147 in__and:53 in__bit:106 in__couple:-107 in__fall:49 in__hospital:54 in__middle:69 in__now:-39
in__so:-40 in__spring:50 in__the:-42 in__till:50 in_a:55 in_another:133 in_april:-63 in_august:43 in_june:104
in_law:-43 in_march:55 in_my:-69 in_october:46 in_tomorrow:-37 in_two:-95 in_weeks:-60 income:65 insurance__it:-49
into:-44 invierno:38 ir_$:-36 ir__la:-52 ir_a:-38 is:49 is_$:-57 is__at:36 is__bad:-36 is__but:-52 is__for:72
is__me:61 is__price:37 is__th:37 is__the:-75 is__to:43 is_fine:-75 is_in:-38 is_it:46 is_killing:72 is_not:40
is_ok:37 is_on:-112 is_over:50 is_plenty:-57 is_the:-50 is_tight:72 ish:-46 it:-80 it_$:62 it__a:-39 it__after:-81
it__and:50 it__be:66 it__his:57 it__i:73 it__im:49 it__in:-77 it__k:38 it__me:-42 it__my:64 it__now:88 it__only:65
it__or:58 it__the:-90 it__up:66 it__what:64 it_at:59 it_back:-64 it_bad:-36 it_be:-66 it_by:43 it_does:39 it_for:103
it_got:-36 it_in:-82 it_is:58 it_myself:-38 it_now:-54 it_over:78 it_this:45 it_till:-59 it_turns:51 it_wait:-141
it_when:62 it_wont:37 jala:-37 january:36 job_so:71 joven:42 jueves:-77 july_$:45 june:155 june_$:75 junta:-76
juntar:54 junto__la:-41 just:36 just__it:-47 just_call:-51 just_had:98 just_not:110 k:69 k_$:167 k_miles:-88
killing:60 killing_me:72 kinda:95 knee:70 know__is:85 know__to:-41 know_it:85 know_what:-39 la:59 la__cuanto:-41
la__de:-48 la__el:-72 la__esta:-57 la__le:59 la__mi:-51 la__pasada:-37 la__que:46 la__quincena:38 la__se:50
la__tiene:50 la__vez:-103 la__y:54 la_boda:40 la_cita:-41 la_cosa:69 la_hora:-43 la_noche:112 la_proxima:-40
la_rodilla:38 la_semana:-108 la_tarde:-83 la_temporada:90 la_verdad:-41 labor:58 labor_day:64 lado_$:-36 las:73
las__de:58 las__hay:57 las__la:-51 las__me:45 las__media:-38 las__millas:63 las__y:40 las__ya:65 las_balatas:36
las_de:-67 las_fiestas:47 las_horas:141 las_mil:152 las_y:-54 last:-92 last_month:-82 later_$:56 later_in:40
later_on:55 later_one:-109 later_time:-86 law:-43 le:191 le__a:-100 le__de:-79 le__la:87 le__que:-57 le_digo:117
le_faltan:45 le_hablo:82 le_hago:94 le_voy:-41 lease:-83 lease__up:-40 leave:70 leaving:-51 left:42 left_$:37 les:281
les_hablo:55 let:137 let__look:45 let__see:62 let__talk:-49 let_me:134 let_the:-69 let_you:145 lets:74 lets__in:98
lets__it:-101 lets_get:-47 lets_out:49 lets_say:36 life:49 light:-36 like_a:-55 like_it:36 limp:41 live:-92 llame:74
llamenme:-53 llamo:-41 llanta__un:65 llanta_de:-36 llegue:106 llegue_a:72 llegue_el:66 llevo:54 llueve:-36
lo__con:-51 lo__cuando:130 lo__de:-63 lo__el:-44 lo__en:-106 lo__la:-52 lo__las:50 lo__lo:43 lo__mi:87 lo__para:-52
lo__pronto:-45 lo__que:-57 lo_cambiaron:-45 lo_cambio:68 lo_del:48 lo_llevo:103 lo_mande:-42 lo_mas:-73 lo_trae:61
lo_vendi:-67 lo_voy:58 long__i:46 long__it:41 long_job:-40 long_would:37 look:175 los:102 los_$:88 los__en:-47
los_mil:104 lost:36 lost_my:81 lot:56 lot_$:71 luego:73 luego_le:76 luego_les:49 lugar:-50 lugar_$:-46 lunes:-40
make:-64 mal:39 manager_$:-36 manager__me:59 manana_a:41 manana_no:-37 mande:-42 manejando:-94 march:115 march_$:74
marcha:-50 martes:-63 marzo:196 mas:69 mas_$:-163 mas_adelante:270 mas_pronto:-55 mas_tarde:116 may:190 may_$:64
maybe:66 maybe_in:57 maybe_next:-68 mayo:59 me:157 me_$:-134 me__al:-104 me__call:-58 me__cuanto:41 me__de:37
me__el:93 me__en:-43 me__hasta:-43 me__im:130 me__in:62 me__it:59 me__june:39 me__la:83 me__las:110 me__like:59
me__lo:68 me__mas:61 me__may:50 me__mi:67 me__my:53 me__next:43 me__on:61 me__por:-79 me__price:-46 me__que:-47
me__ring:-43 me__then:37 me__this:-43 me__time:60 me__to:-110 me__week:113 me__when:-104 me_about:63 me_after:45
me_again:107 me_at:127 me_back:-83 me_cobraron:-44 me_dan:70 me_dieron:-37 me_escriban:-62 me_espero:61 me_esta:-74
me_how:-101 me_in:59 me_llegue:77 me_lo:-41 me_look:45 me_marca:-113 me_next:99 me_now:-67 me_on:-72 me_please:-64
me_quiten:47 me_rompieron:-57 me_see:62 me_some:61 me_talk:-49 me_tengo:-51 me_the:-39 me_then:197 me_tomorrow:67
me_twice:-60 me_up:107 me_va:-65 me_van:-57 me_what:-66 me_when:75 me_who:-56 media:-47 mejor_$:43 mensajes:-40
mero:45 mes:-70 mes_$:-127 mes_pasado:-39 meses:72 meses_$:55 message__i:-36 message_me:73 message_when:-36
mi__para:-51 mi__se:53 mi_compadre:-38 mi_cunado:-40 mi_esposo:41 mi_horario:55 mi_mama:40 middle:57 middle_of:59
mientras:47 miercoles:-52 miercoles_$:-47 might__well:-57 might_as:-57 mija:-37 mil:210 mil_millas:45 miles_on:-53
millas_$:-51 mine:-44 mis:-53 mm:108 molesta:36 moment:66 momento:223 momento_no:235 monday:-44 monday_$:61
monday_and:-47 money:44 money_$:-62 money__tight:55 money_is:77 month_$:44 month__plenty:-57 month__so:63
month_is:-99 month_or:44 months:59 months_$:56 morning_$:-49 morning__i:65 motor:49 much:-58 much_$:-76 much__it:62
much_would:53 mucho:76 muy:-79 my:59 my__a:-47 my__back:-91 my__first:74 my__has:52 my__is:81 my__just:38 my__lol:53
my__no:-36 my__not:37 my__refund:45 my__so:63 my__too:-40 my__what:67 my__yesterday:39 my_bonus:58 my_boss:83
my_car:-79 my_dad:-63 my_daughter:52 my_husband:39 my_job:49 my_list:37 my_money:-57 my_number:36 my_phone:-50
my_schedule:164 my_son:-37 my_tax:55 myself:-38 myself_$:-38 n:44 nada_$:-52 navidad:40 nd:41 near:78 near__car:60
near_the:57 need:68 need__know:-72 need_to:153 never:-37 new:82 new_one:46 new_ones:-65 new_year:66 next__please:59
next_year:-103 ni:-92 no:50 no__ahora:98 no__at:-37 no__dinero:-48 no__do:45 no__el:-73 no__en:78 no__escriban:-58
no__for:43 no__im:-46 no__ir:43 no__is:-42 no__just:-40 no__la:-55 no__mas:50 no__ni:79 no__nomas:40 no__now:123
no__puede:60 no__si:37 no__tiempo:85 no__va:71 no__ya:50 no__yet:168 no__you:-45 no_can:45 no_creo:-38 no_es:62
no_estoy:70 no_gracias:122 no_he:41 no_idea:57 no_im:-48 no_le:-96 no_llego:43 no_lo:-59 no_me:-142 no_more:-43
no_need:-94 no_not:78 no_ocupo:-89 no_para:-40 no_point:-49 no_por:83 no_puedo:192 no_quede:-39 no_se:79 no_tengo:93
no_thanks:-51 no_traigo:164 no_vamos:-43 no_vuelvan:36 no_what:-45 noche:89 noche_$:-50 none:37 none__them:63
none_of:50 noon:-44 not:89 not__but:58 not__i:-36 not__me:-62 not__my:86 not__not:-117 not__now:86 not__the:-85
not__this:139 not__to:-66 not__week:67 not__yet:46 not_a:106 not_at:93 not_before:42 not_ever:-117 not_going:-106
not_in:-119 not_me:-146 not_near:60 not_now:228 not_right:206 not_sure:159 not_til:80 not_till:55 not_today:171
not_yet:120 nothing:-50 noviembre:75 now:236 now_$:112 now__me:-39 now_please:39 nudge:142 nuevo:83 nuevo_$:45
numero:-51 nunca:-56 o__no:75 o_no:100 o_si:75 october:62 october_$:39 octubre:70 ocupo:-56 ocupo_$:-89 of:-52
of__month:-48 of_it:64 of_office:-40 of_the:-43 of_these:51 of_town:95 off_$:-59 off_the:69 office:-47 oh:-68 oil:50
ojala:77 ok:-59 ok_$:-50 on:53 on_$:-54 on__back:70 on__for:48 on__now:47 on__refund:-109 on__thought:-37 on_a:52
on_for:-38 on_in:-89 on_it:59 on_my:108 on_second:-37 on_the:43 on_thursday:-38 once:107 once__month:-86 once_a:-86
once_im:40 once_the:42 one:-46 one__these:51 one_of:49 ones:-68 only_at:52 only_have:-40 open:-44 open_tomorrow:-61
opens:-48 opt:-58 or:-50 or__i:46 or__other:-39 or_no:-65 or_so:150 other_thing:59 otono:52 otono_$:36 otra__el:95
otra__que:52 otra_semana:45 otra_vez:-77 otras:67 otro:-48 otro_dia:66 otro_mes:46 out:-130 out_$:-70 out__office:-40
out__the:36 out__town:107 out_on:-53 out_the:-57 out_when:72 over:-55 over_$:38 over_to:-37 pago:58 par:-41
par_de:-41 para:107 para__no:-40 para__se:-58 para_cuando:-66 para_la:-45 para_las:54 para_nada:-73 para_que:-47
para_ver:-43 parada:-47 parado:36 parked:74 pasa:48 pasada:-37 pasado:-73 pasado_$:-68 pasando:126 pase:108
pase_la:42 paso_$:49 paso_de:-36 pass:-70 pass_$:-44 passed:-43 patina:-36 patron:68 pay_for:-48 payday:103 paying:51
paz:-84 pena:-55 perhaps:41 period:72 pero:54 pero__el:94 pero__la:-60 pero__me:58 pero__que:93 pero_en:43 pero_si:56
pero_ya:51 phone:-68 phone_$:-44 pickup:41 pico_$:-41 ping:46 ping_me:46 please:55 please_$:91 please__a:54
please__me:-40 please__the:47 plenty:-52 pm:-56 point:-49 point_$:-49 por__momento:36 por__no:68 por_ahora:168
por_cierto:64 por_lo:60 por_mi:-54 por_que:-59 por_telefono:-46 porq:43 porque:-64 porque__de:-36 precio__me:-45
precio_que:-45 pregunta:-37 preguntame:107 preguntar_$:-48 preguntenme:80 prices:-42 pricey:-67 primavera:59
primero:79 primero_$:68 proxima:-40 proxima_semana:-52 puedan:-39 puede__para:-49 puedo:41 puedo_$:66
puedo_esperar:-116 pues:-81 pues_$:-52 pull:39 put__in:-37 put__off:44 put__on:55 put_it:66 putting:-39 que_$:-49
que__a:-46 que__al:48 que__borren:-75 que__den:45 que__despues:-48 que__el:83 que__es:-71 que__la:155 que__menos:55
que_ahora:60 que_ando:36 que_cancelar:39 que_cobre:69 que_le:-111 que_me:-41 que_mi:36 que_no:-75 que_pase:90
que_sea:-43 que_sigue:50 que_ya:-54 quedan:54 quedan_$:65 quedo_bien:67 quien__el:56 quieran:-41 quiere:55
quieren:-47 quincena:42 quincena_$:99 quiten:53 quiza:44 rato_que:87 reach:81 reach_out:53 reading:66 reads:44
ready_$:40 recien:41 reembolso:-86 refund_$:-37 regrese:37 regrese__la:42 regrese_de:55 regresen:50 remind:73
remind__in:76 remind__what:-47 remind_me:73 repair:47 revisit:105 right:116 right__the:-38 right_now:125 ring:-69
road_$:92 rodilla:38 rolls:42 rompieron:-57 rush:37 sabado:-69 sabados:52 saber_cuanto:41 said:51 sale:-64 salga:76
saliendo_de:53 salir_de:44 sat:-59 save:68 saving:142 say_no:-54 says:84 says_$:80 schedule:44 schedule_$:-104
school__out:67 school_lets:67 scrap:51 se__a:37 se__el:-46 se__la:69 se__para:37 se__paso:76 se__va:-41 se_los:-37
se_puso:36 se_que:51 se_tardan:49 se_va:45 sea:-45 sea_$:-41 second_$:67 second_thought:-37 sedan:-56 sedan__at:-48
sedan_is:-48 see:205 see__at:67 see__message:-36 see__my:118 see__then:-39 see_what:109 see_yeah:75 see_you:-47
see_your:-36 seguir:49 selling:-47 semana:-95 semanas:80 semanas_$:77 sera:141 sera_$:157 service:45 servicio:-39
set:-56 set_for:-45 shes:39 shift:-41 should_i:49 si:77 si_$:42 si__bien:69 si__el:-49 si__espero:40 si__para:-41
si__quiere:74 si__si:97 si_dios:74 si_no:41 si_puedo:73 si_quedo:66 si_si:99 si_va:-41 siempre:-45 sign:-74
sign_me:-44 sigue_$:50 siguen:54 since:-48 sir:-41 sitting:38 sitting_at:-49 six:55 skip:-41 skip_it:-40 slot:-36
slow_down:56 snowed:36 snowed_in:36 so:-80 so_$:110 so__is:-55 so__me:73 so_i:45 so_it:-69 so_no:-58 sold_$:59
some:80 some_time:50 someone:-53 something_$:56 sometime:-74 sometime__week:-43 sometime_next:-43 son:-76 soon_$:-64
soon__the:68 sorry:-80 sorry_i:-67 soy:-40 spring_$:-57 start:-41 sticker:-38 still:-51 still__on:-108
still_waiting:-107 stolen:-39 stop_by:46 stop_the:43 su:-57 suelta:41 summer:48 sunday:76 sunday_$:125 super:51
sure__me:-89 surgery:61 sus:-64 swamped:63 t:68 take:-88 take_it:-40 tal:43 tal_vez:42 talk:82 talk__my:48
talk__the:-59 taller:-50 tantito:91 tap:78 tardan_$:-43 tarde_se:72 tax:105 tax_$:-80 tax_refund:60 te:163
te__luego:-147 te_digo:107 te_escribo:-77 telefono_$:-69 tell:87 tell__the:-51 tell_me:-77 tell_you:242 temporada:90
temporada_de:77 tenga:63 tengan:-44 tengo:75 tengo__para:-41 tengo_dinero:-43 tengo_tiempo:85 termine:86 texas:-48
text:79 text_$:44 text_again:53 texts:-65 texts_again:-61 th_$:90 that_$:-39 that__the:85 that_can:80 that_for:61
that_in:-62 that_is:-37 the:44 the__again:-95 the__are:158 the__at:-68 the__change:40 the__first:-45 the__for:45
the__ill:138 the__is:61 the__job:39 the__lol:83 the__of:105 the__on:40 the__one:-63 the__says:49 the__thanks:48
the__the:-46 the__this:38 the__till:55 the__time:-63 the__until:67 the__week:-36 the_airport:55 the_alignment:-44
the_bank:-40 the_car:141 the_early:-55 the_fall:127 the_garage:56 the_holidays:38 the_hospital:36 the_last:52
the_later:-87 the_list:-41 the_manager:-36 the_middle:68 the_moment:66 the_month:-49 the_nd:40 the_new:67 the_oil:74
the_road:62 the_sedan:-47 the_service:56 the_spring:50 the_texts:-61 the_th:-38 the_wheels:-67 the_windshield:-36
them_$:-57 then:126 then_$:101 then_ill:-48 there__fee:-37 there__the:-39 there_a:-36 they:-38 they__my:-41
they_did:-40 thing_$:-64 thing_to:-38 things:93 think__it:102 think_about:39 this:58 this_$:-47 this__for:-36
this__how:66 this_is:-97 this_month:111 this_morning:51 this_phone:-46 this_time:-45 this_week:101 though_$:55
thousand_$:56 thousand_miles:-99 thurs:-36 thursday:-38 thursday_$:-40 tiene__y:56 tiene_millas:-48 tight:94
tight_$:88 til:114 til__th:99 til_after:51 til_my:96 til_the:72 till:89 till_summer:-84 till_the:62 time:106
time__week:75 tiro:56 tmrw:87 to:70 to__after:-42 to__and:72 to__for:126 to__in:40 to__it:-48 to__manager:-36
to__me:-87 to__my:-38 to__on:79 to__this:-42 to__to:97 to__up:66 to__what:68 to__wife:41 to__with:78 to__your:38
to_be:-52 to_check:77 to_drive:-51 to_know:-76 to_look:-69 to_next:-42 to_pay:-50 to_see:126 to_talk:84 to_tell:-49
to_the:-103 to_wait:91 toda:-51 toda_la:-51 todavia_no:183 today:83 today_$:36 todo__bien:-46 todo__lo:36
todo_bien:51 told:43 told_me:38 tomorrow:57 tomorrow_$:148 tomorrow__is:52 tomorrow_after:-44 tonight:119
tonight_$:94 too_$:-47 too__for:-76 too_much:49 took:-69 took_it:-37 totaled:-42 totaled_it:-39 town:61 town_$:81
trade:-84 trae_mi:61 traigo:122 tree:-39 trip:-92 truck:-73 try:183 try_me:233 tuesday:-48 turns_$:49 twice:-62
twice_$:-64 two:-74 two_weeks:-82 un__cuando:59 un__de:-39 un__mas:-116 un_mensaje:48 un_mes:-125 un_par:-41 una:-64
unas:109 unas_semanas:58 uno:-57 unos:146 until_the:67 up:115 up__it:40 up_for:39 up_in:92 us_$:-41 use:-50
ustedes:-47 va_el:-44 va_en:129 vacaciones:52 vacation_$:132 vamos:-74 vamos_a:-43 vea:43 veces_$:42 vemos:56
vender:50 vendimos:-85 ver_$:40 ver__mi:66 ver_con:74 verano_$:-46 verdad_$:58 vez:-113 vez_$:-59 vez_el:126
vez_en:39 viene_$:37 viernes:-37 volver:40 voy:-44 voy_$:-60 voy__el:36 voy_a:117 vuelva:76 vuelvo:-36 wait_$:47
wait__my:110 wait_for:52 wait_or:39 wait_till:82 waiting_on:45 want_a:42 wants:65 wants_to:68 we__a:65 we_are:73
we_just:40 weather:57 wed:-39 week:48 week_$:96 week__it:66 week__the:-37 week_of:-41 weeks_$:92 went:-94
went__in:-65 were:72 what:-47 what__i:92 what__it:83 what_my:82 what_should:49 what_you:-47 when:177 when__can:37
when__get:-36 when__i:-103 when__is:40 when__slow:65 when__you:-70 when_do:-85 when_i:116 when_im:60 when_it:75
when_school:105 when_the:180 when_would:-96 when_you:-71 where:-53 which_$:50 while_im:-43 who:-56 who__are:-57
who_you:-57 why:-57 wife__the:51 will:106 will__you:90 will_do:-52 will_get:59 will_it:-38 windshield:-36 winter:-42
winter_$:37 with_me:61 with_my:41 with_tax:-87 with_that:37 with_the:-40 wont:41 wont_be:55 work:-71 work_$:-47
work__on:-42 would__be:47 would__get:-66 wow:-55 wreck:58 write:82 wrong:-42 y__a:61 y__del:52 y__digo:-58 y__le:59
y__lo:-55 y__me:-41 y__que:-39 y__ya:88 y_donde:66 y_eso:81 y_me:43 y_media:-41 y_no:-80 ya:45 ya_$:-107 ya__me:123
ya__pase:39 ya__que:55 ya__quien:56 ya__se:54 ya_les:180 ya_lo:-98 ya_no:-78 ya_que:236 ya_se:52 yes:-73 yes__i:-43
yes__the:41 yes_but:-44 yesterday_$:-54 yet:355 yet_$:68 yet__me:168 yo:86 yo_le:52 yo_les:86 you:-81 you_$:42
you__i:36 you__in:62 you__my:-49 you__now:-37 you__or:-46 you__the:48 you__tomorrow:69 you_are:-60 you_can:-48
you_have:-41 you_know:138 you_open:-49 you_still:39 you_told:40 you_tomorrow:158 you_want:42 you_when:68 your:-91
your__on:40 your__when:-36 your_message:-36 youre:-41 yours:36
"""
