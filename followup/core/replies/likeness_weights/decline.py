"""What speaks for and against `decline`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "decline"
BIAS = -132
WEIGHTS = """\
#abad:-57 #abla:-34 #able:-41 #abou:62 #abre:-29 #acci:-23 #aced:-36 #acei:52 #acer:21 #acia:-23 #acie:14 #acom:32
#acor:16 #actu:42 #adec:14 #ador:14 #afir:-16 #agai:17 #agar:-57 #agen:-49 #ages:-16 #agra:21 #agua:-24 #ahor:-161
#aigo:-70 #ains:35 #ajan:22 #ajar:-17 #ajes:-23 #aken:-18 #akes:-19 #akin:-14 #aler:75 #algu:41 #alir:-16 #alis:15
#alle:-51 #alls:105 #ally:16 #alme:-16 #alqu:-22 #also:40 #alta:-16 #alto:-15 #amab:-59 #amig:16 #amor:15 #amos:143
#anag:19 #anan:-25 #ance:81 #anda:58 #andm:15 #ando:-19 #ands:-31 #anej:-60 #ange:30 #ania:20 #anic:45 #anks:-58
#anne:-34 #anot:-26 #ansm:14 #answ:27 #ante:-46 #anym:-16 #anyw:121 #apen:21 #aper:51 #apid:-18 #appo:32 #appr:21
#appy:-55 #aqui:-163 #arag:36 #arat:21 #arca:-36 #arch:-72 #arda:-14 #arde:39 #ardo:16 #ards:20 #arge:-18 #aria:-33
#ario:45 #arli:-34 #arlo:33 #arly:54 #arou:24 #arqu:-18 #arra:-68 #arro:-15 #arte:-18 #arts:-22 #asad:26 #ashe:15
#aske:-23 #asse:-52 #aste:120 #atel:18 #athe:31 #atis:29 #ativ:146 #atte:-51 #atur:42 #auge:-34 #aunq:27 #auto:-16
#avia:-56 #avor:36 #away:31 #ayar:22 #aybe:-16 #ayer:-37 #ayin:21 #bado:-57 #baja:28 #bajo:-14 #band:-18 #bara:21
#bate:-21 #been:-31 #befo:-35 #bend:-17 #best:-15 #bien:99 #bike:14 #bill:-26 #bios:-44 #blan:-24 #blem:-97 #bles:-42
#book:-22 #boss:-16 #both:-40 #boug:-19 #bout:62 #brak:-34 #bran:16 #brar:23 #brea:-16 #bren:-28 #brin:-32 #bsup:-41
#buck:33 #buen:-41 #busy:-46 #cada:-16 #call:25 #canc:-51 #cand:-42 #cani:34 #cant:107 #cara:17 #card:48 #care:-14
#caro:189 #carr:-15 #cars:18 #casa:62 #casi:24 #caso:89 #catc:-24 #ccid:-21 #ccio:-14 #ceit:52 #cela:-18 #cesa:55
#cesi:-36 #cess:33 #chan:145 #char:-24 #chas:-22 #chea:49 #chec:-19 #chem:17 #cher:24 #chev:-14 #chil:17 #chin:-15
#choc:14 #choq:-46 #chur:33 #cias:-28 #ciat:21 #cibi:-88 #cida:-18 #cide:38 #cidi:21 #cido:65 #cion:15 #cios:17
#cita:54 #cked:30 #clas:35 #clie:-38 #clin:22 #clos:18 #cobr:31 #coch:24 #cojo:25 #comi:44 #como:-132 #comp:49
#cond:-27 #conf:-20 #conm:27 #cono:-26 #cons:17 #cont:-60 #conv:72 #cool:-20 #cord:20 #corr:-25 #cosa:16 #cost:-45
#coun:33 #coup:-19 #cove:19 #cran:-31 #crap:-17 #crat:21 #craz:14 #creo:35 #crib:-54 #cros:25 #ctob:-30 #ctua:48
#cual:-31 #cuan:-27 #cuen:-14 #culp:17 #cupe:60 #curi:48 #cust:-41 #dado:-16 #dand:40 #dang:20 #dato:14 #daug:14
#davi:-49 #days:79 #ddle:-22 #deal:64 #deci:82 #deja:48 #deje:85 #dejo:87 #deme:-30 #denm:35 #dent:-35 #ders:57
#dese:14 #desk:19 #desp:-21 #dial:54 #dias:-16 #dice:25 #dici:-19 #didn:-16 #dido:17 #diga:-38 #dije:17 #dime:63
#dimo:-15 #ding:115 #dist:-17 #dito:-20 #dled:-24 #does:85 #doin:43 #domi:-20 #done:-22 #dont:39 #doub:-136 #down:42
#drop:-17 #dson:-30 #duen:-18 #dule:-21 #eady:-34 #eaks:14 #eale:74 #ease:-20 #east:19 #eave:124 #eblo:15 #ecal:87
#ecan:34 #eces:37 #echi:-16 #ecia:17 #ecib:-91 #ecid:82 #ecke:25 #ecoj:27 #econ:-28 #ecto:-17 #edan:-28 #edar:-14
#eded:69 #edes:-58 #edin:27 #edio:-14 #edul:-21 #eede:69 #eedi:27 #eeke:-15 #eepi:34 #eeps:-16 #efer:-14 #efie:47
#efor:-35 #egal:15 #egat:169 #egla:-44 #egle:-14 #eglo:57 #egoc:20 #egre:-14 #egue:-17 #ehic:-23 #eite:52 #eith:50
#ejan:-14 #ejel:108 #ejem:-14 #ejor:89 #ejos:59 #eken:-15 #elin:16 #elli:43 #ello:28 #eloc:-20 #else:51 #eman:-22
#embe:-20 #emin:62 #emos:-37 #empo:-29 #empr:78 #ench:35 #ende:-81 #endo:-33 #endr:-20 #enen:41 #enes:-14 #engi:-15
#engo:20 #enin:44 #ensa:-34 #ensi:69 #enso:-16 #ente:-65 #enti:-25 #ento:-79 #entr:-50 #eocu:47 #eone:55 #eopl:-41
#epin:34 #epla:-36 #eras:-28 #erch:25 #erdo:-37 #eren:-39 #erer:20 #eres:57 #erfe:-30 #eria:-50 #erme:19 #erne:16
#eron:-18 #erou:20 #erra:25 #erro:15 #erse:-37 #erso:-44 #erta:32 #esar:53 #esas:76 #escr:-61 #escu:-14 #esda:-17
#esit:-37 #esnt:91 #esos:57 #essa:26 #esse:-30 #este:-82 #esto:29 #ethi:-18 #even:38 #ever:64 #eves:28 #ewhe:101
#exac:-29 #exis:-32 #expe:69 #exte:-55 #exti:16 #exto:-16 #exts:-39 #eyre:22 #falt:-17 #favo:36 #fect:-31 #feel:-31
#fere:-26 #feri:-63 #fier:50 #fine:144 #fini:-14 #firm:-35 #firs:-63 #fixe:-69 #flat:15 #flee:16 #flic:19 #flui:20
#fore:-37 #forg:21 #fort:28 #foun:82 #free:-18 #fren:-89 #frid:20 #full:31 #funn:18 #gain:17 #gano:15 #gara:35
#garr:-55 #gast:30 #gati:169 #gaug:-34 #gave:40 #gear:-20 #gend:-38 #gero:20 #gett:23 #ghte:22 #ging:-16 #givi:19
#glar:-38 #goci:20 #goin:59 #good:50 #grab:-21 #grac:-28 #grad:21 #gran:-18 #gras:15 #grat:28 #grea:20 #gros:-14
#gual:-29 #guan:-19 #guen:20 #guie:20 #guna:94 #guno:82 #habl:-43 #hace:-36 #haci:14 #haga:52 #hago:56 #hanc:128
#hand:27 #hank:38 #happ:-21 #hard:69 #harg:-20 #hast:-32 #have:35 #heap:55 #heat:-43 #hedu:-21 #hell:17 #hera:23
#here:-22 #heve:-14 #heyr:22 #hich:-26 #hicl:-21 #hijo:37 #hile:-41 #hing:40 #hink:-36 #hist:26 #hizo:-18 #hoca:15
#hole:18 #hoqu:-46 #hori:-90 #horr:16 #hose:77 #hosp:-19 #houg:65 #hour:45 #hout:17 #hree:57 #hrou:-41 #hter:14
#humb:102 #hurc:33 #iali:15 #iate:21 #iban:-44 #ibir:-97 #ible:40 #ibra:-15 #icen:14 #ices:63 #icio:-30 #icle:-21
#idad:15 #iday:18 #iddl:-15 #idea:-105 #ided:70 #iden:-26 #idit:-14 #idnt:-16 #idos:-14 #iend:-38 #iene:14 #iera:-18
#iern:24 #ierr:25 #iert:19 #iest:-15 #igam:-19 #igan:48 #ight:37 #igua:-29 #ijer:-14 #illa:18 #imer:-27 #imes:22
#imon:-20 #imos:-25 #impo:59 #ince:34 #inda:-34 #inde:37 #indi:16 #ingo:-26 #ingu:111 #inki:42 #inne:16 #inst:22
#inte:27 #intm:34 #into:62 #inut:-15 #invi:32 #iona:16 #ione:-39 #iosi:36 #iper:72 #ippe:15 #iran:-16 #irma:-25
#irst:-63 #irve:36 #ises:38 #isim:-25 #isis:15 #isit:-15 #ismo:25 #isnt:29 #iste:-16 #itar:18 #ithe:50 #itho:18
#ivin:15 #ixed:-70 #jalo:28 #jand:17 #jaro:33 #jelo:108 #jeme:-14 #jenl:23 #juev:28 #junt:-15 #just:42 #keep:44
#kend:-15 #kind:-16 #know:-69 #lace:-37 #laci:15 #lama:-22 #lant:20 #laro:-63 #lash:26 #late:24 #leas:14 #leav:117
#leep:38 #leet:16 #legu:-15 #lejo:44 #lema:-40 #lent:-22 #lest:-26 #lett:-15 #leva:17 #leve:-27 #levo:58 #lgui:24
#lgun:17 #lien:-45 #lier:-32 #like:21 #lina:26 #lind:-38 #ling:27 #lisi:15 #list:-15 #live:20 #llam:-31 #llan:47
#llas:14 #lleg:-29 #ller:-42 #llev:29 #llin:53 #llos:20 #lmen:-16 #loan:-17 #loci:-20 #loco:139 #long:-119 #lood:20
#look:-36 #lost:-15 #lqui:-22 #lsew:49 #lter:-15 #ltim:-19 #lueg:-14 #luid:20 #lvid:44 #lyin:22 #maam:17 #mabl:-59
#made:-15 #mana:-28 #mand:23 #mane:-61 #mann:-28 #mano:16 #many:-32 #marc:-118 #mari:-27 #marq:-17 #mart:-22
#mati:-25 #matt:-40 #mayb:-16 #mber:-39 #mbre:18 #mbsu:-41 #meca:34 #medi:-18 #mejo:89 #mens:-31 #ment:-77 #meon:55
#mera:-14 #mero:-74 #meth:-18 #meto:17 #mewh:52 #midd:-15 #migo:43 #mill:15 #mind:50 #ming:29 #minu:-15 #mism:16
#miss:15 #moda:32 #mole:-26 #mome:-120 #mond:31 #mone:16 #more:-168 #morn:-53 #morr:-15 #moto:-15 #mpan:34 #mpla:-17
#mpli:15 #mpos:58 #mpra:58 #mpre:-22 #much:-74 #muer:35 #must:-18 #myse:81 #nada:54 #nage:19 #name:-111 #nana:-25
#nate:15 #ncel:-50 #nces:108 #nche:31 #ncio:34 #ndan:56 #ndar:-21 #nday:22 #nded:14 #ndem:-38 #nder:26 #ndic:-15
#ndin:87 #ndra:-20 #ndso:-30 #nece:52 #nega:162 #nego:20 #neit:178 #neja:-23 #nejo:-35 #nero:-15 #ners:-29 #nest:-16
#next:-18 #nfor:27 #nger:-42 #nges:40 #ngin:-27 #ngun:111 #nice:108 #nico:31 #ning:143 #nito:-18 #nkin:20 #nmig:27
#nner:-19 #nois:15 #noma:49 #nomb:71 #none:236 #noon:-14 #noth:41 #nozc:-91 #nque:27 #nsaj:-30 #nsar:-18 #nsmi:14
#nste:-20 #nswe:27 #ntac:-26 #ntan:-15 #ntas:46 #ntem:-21 #nter:46 #ntes:-60 #ntie:-16 #ntme:34 #ntra:-57 #numb:-19
#nume:-51 #nven:21 #nvie:68 #nymo:-16 #nywa:122 #oane:-17 #ober:-48 #oble:-85 #obra:51 #oche:22 #ocid:44 #ocio:20
#ocke:-18 #octo:-19 #ocup:63 #odav:-49 #oday:-45 #odos:25 #odre:-16 #oesn:91 #oger:-16 #oiga:18 #oing:101 #oint:60
#oise:15 #oked:-17 #oles:-37 #olvi:42 #omas:47 #ombr:19 #omen:-121 #omeo:55 #omer:-44 #omet:-15 #omew:52 #omin:25
#omod:32 #omor:-21 #ompa:44 #onan:24 #onda:48 #ones:43 #oney:16 #onfi:-37 #onge:-69 #onit:-15 #only:95 #onmi:27
#onoz:-91 #onta:-32 #onte:-22 #onve:19 #onvi:53 #ooke:-17 #ooki:-17 #ooks:20 #ople:-41 #opti:-31 #oque:-46 #oras:60
#orda:24 #orge:28 #orit:-98 #orks:-31 #orni:-54 #orre:-30 #orri:-94 #orro:-16 #orry:77 #orta:17 #orte:-15 #orth:170
#oser:17 #oses:-16 #osib:60 #ospi:-19 #othe:46 #othi:20 #otro:21 #ough:-16 #ould:-27 #ound:79 #ount:33 #ower:-18
#owne:-43 #ozco:-91 #pany:14 #para:71 #park:-16 #part:-26 #pasa:-14 #pass:171 #payi:21 #pedi:-19 #pena:87 #pend:55
#peni:35 #pens:64 #peop:-41 #perd:-37 #perf:-30 #pero:100 #phil:-20 #pido:-14 #ping:18 #plac:-38 #plea:-34 #plug:14
#podr:-17 #poin:61 #poke:44 #posi:59 #poss:-14 #powe:-18 #pped:-22 #ppen:34 #ppoi:32 #ppre:21 #pran:58 #prec:16
#pref:34 #pren:-43 #preo:47 #pres:-67 #pric:46 #prim:-54 #prob:-107 #prop:14 #ptio:-31 #pueb:15 #puer:20 #pues:-35
#punt:-16 #quea:72 #quem:-20 #quen:-16 #quer:20 #quie:-80 #quit:31 #raba:16 #raci:-30 #rage:36 #raig:-64 #rake:-33
#ranc:-28 #rand:-26 #rank:-31 #rano:58 #rapi:-19 #rapp:-14 #raro:19 #ratc:21 #rath:34 #rati:24 #rato:49 #raya:22
#razy:14 #rcha:-37 #rdar:15 #rday:29 #rdon:-29 #reac:-21 #reat:15 #reca:86 #rece:-17 #rech:-19 #reci:-83 #reco:27
#rect:-24 #refe:-14 #refi:47 #regr:-14 #remi:62 #rena:-25 #renc:15 #rend:-44 #reno:-62 #reoc:47 #repl:-46 #resa:-47
#rese:-16 #resp:21 #ress:-18 #rest:26 #resu:-22 #rfec:-30 #rget:28 #riba:-46 #rice:42 #rida:19 #ride:-17 #ries:-93
#righ:75 #rike:18 #rime:-27 #rimo:-21 #ring:-48 #rios:40 #rise:-16 #rita:-95 #rito:27 #rivi:-16 #rlie:-34 #rmat:-20
#rnes:17 #rnin:-45 #road:-21 #robl:-106 #rong:-32 #ross:25 #roug:-55 #roun:31 #rous:20 #rque:-22 #rrec:-23 #rrie:-106
#rror:14 #rrow:-15 #rsda:28 #rson:-44 #rtan:16 #rtes:-19 #ruck:-15 #ruid:-28 #runs:23 #rven:19 #saba:-57 #sado:16
#said:14 #saje:-27 #sale:-32 #salg:15 #sali:-35 #same:15 #sari:44 #sarl:16 #sary:33 #satu:38 #says:54 #sche:-21
#scri:-55 #scue:-14 #scul:17 #seas:-31 #seco:-27 #sela:15 #self:82 #sell:39 #sema:-22 #sera:-18 #sewh:49 #shop:-57
#sibl:46 #sida:28 #siem:16 #sien:43 #siga:62 #sign:-38 #sima:-25 #simo:-24 #sinc:23 #sing:23 #sirv:32 #sito:-33
#sked:-23 #skip:59 #slee:38 #smis:14 #sold:-101 #soli:-14 #solo:77 #some:68 #sona:-24 #sons:16 #soon:27 #sorr:68
#soun:-32 #spen:62 #sper:-14 #spit:-16 #spok:44 #sque:70 #ssed:-73 #ssio:14 #stam:102 #stan:-31 #star:-15 #stat:-15
#stay:31 #stea:-17 #sted:-38 #sten:-24 #stil:-36 #stol:-20 #stom:-41 #stop:-39 #stos:-17 #stoy:86 #stre:16 #stri:34
#stuf:36 #suit:14 #sume:-19 #supe:-28 #swap:-29 #swer:27 #taci:16 #tact:-26 #take:16 #talk:-36 #tall:-55 #tamo:111
#tand:-54 #tard:34 #taro:14 #tate:-15 #tche:23 #tead:-20 #tede:-58 #tell:-37 #teme:-23 #temp:61 #tenc:16 #tend:-35
#teng:17 #tere:47 #tern:-22 #text:-104 #than:46 #ther:42 #thos:69 #thou:69 #thre:52 #thro:-41 #thum:101 #tiem:-21
#tien:-51 #tier:19 #tigh:-16 #till:-37 #time:35 #ting:75 #tion:-44 #tira:-31 #tire:24 #tive:103 #tivo:38 #tmen:34
#tobe:-30 #toda:-78 #todo:16 #told:-14 #tole:-20 #tome:-39 #tomo:-16 #took:-27 #town:-33 #trab:21 #trai:-72 #tran:-37
#trat:-15 #trea:19 #tres:29 #trik:18 #truc:-15 #tter:-61 #ttin:72 #tual:44 #tues:-28 #tuff:36 #turd:38 #turn:-35
#uall:32 #ualm:-16 #ualq:-22 #uand:-22 #ucha:-27 #ucks:16 #ueak:74 #uebl:15 #ueda:53 #uede:-16 #uedo:-24 #uego:-15
#uena:-21 #uent:-15 #uere:56 #uert:17 #ueva:-15 #ueve:30 #uier:-72 #uito:-14 #ulti:-19 #umbe:-19 #umbs:102 #umer:-51
#unch:-21 #unda:-15 #unde:-21 #unds:-26 #unfo:20 #unny:18 #unqu:27 #unta:-18 #unte:-16 #uper:-29 #uphi:-20 #upon:-17
#urch:33 #urda:38 #urge:-15 #urio:47 #ursd:28 #usca:-19 #usco:18 #usta:24 #uste:-60 #usto:-68 #utti:60 #vale:58
#varl:23 #vece:-15 #vehi:-23 #velo:-20 #vemo:-30 #vend:-25 #vera:-37 #verc:25 #vers:-37 #very:15 #viaj:-37 #vibr:-15
#vici:-15 #vide:47 #vien:51 #vier:69 #ving:26 #visi:-16 #vive:-48 #walk:15 #want:-51 #wapp:-28 #week:-62 #well:-14
#were:126 #what:36 #when:66 #wher:99 #whic:-26 #whil:-41 #whol:23 #wife:27 #will:33 #wipe:68 #wner:-34 #wont:54
#word:14 #work:36 #worr:-95 #wort:161 #wron:-32 #xact:-29 #xist:-32 #xtee:-59 #xtin:26 #xtos:-20 #yaro:22 #yeah:-14
#year:40 #ying:50 #ymor:-16 #ysel:81 #yway:122 #zero:82 %again_later:-139 %again_later%agree:-39
%again_later%away:-45 %again_later%bad:21 %again_later%bring:-52 %again_later%busy:-34 %again_later%call_off:-17
%again_later%car:60 %again_later%doubt:58 %again_later%family:48 %again_later%leave_me:15 %again_later%message:-22
%again_later%money:-35 %again_later%on_way:131 %again_later%opening:29 %again_later%pay_day:-42 %again_later%phone:55
%again_later%place:-19 %again_later%question:-33 %again_later%staff:30 %again_later%start_again:19
%again_later%thanks:21 %again_later%who:17 %again_later%wrong_one:71 %agree:-95 %agree%away:52 %agree%bad:-14
%agree%bring:-117 %agree%busy:-25 %agree%call_off:65 %agree%car:124 %agree%car_part:222 %agree%do_it:26
%agree%doubt:-47 %agree%fails:-28 %agree%family:-29 %agree%gone_car:17 %agree%how_long:-75 %agree%leave_me:-23
%agree%lift:-29 %agree%message:14 %agree%money:-43 %agree%opening:19 %agree%phone:22 %agree%place:41
%agree%question:177 %agree%refuse:-66 %agree%shift_it:-31 %agree%start_again:-31 %agree%thanks:160 %agree%who:14
%agree%wrong_one:73 %away:20 %away%bring:-21 %away%busy:-21 %away%call_off:20 %away%car:14 %away%do_it:85
%away%doubt:-41 %away%elsewhere:-35 %away%fails:34 %away%family:14 %away%how_long:-21 %away%leave_me:-23
%away%lift:-23 %away%money:37 %away%noise:43 %away%on_way:-46 %away%pay_day:-17 %away%phone:-15 %away%place:41
%away%question:18 %away%refuse:161 %away%staff:29 %away%start_again:15 %away%thanks:60 %bad%call_off:30
%bad%car_part:53 %bad%do_it:16 %bad%doubt:35 %bad%elsewhere:-17 %bad%question:20 %bad%refuse:25 %bad%shift_it:16
%bad%staff:-16 %bad%wrong_one:24 %bring:31 %bring%busy:-24 %bring%call_off:-105 %bring%car_part:64 %bring%doubt:-41
%bring%elsewhere:59 %bring%family:-22 %bring%gone_car:16 %bring%leak:27 %bring%meaning:20 %bring%message:79
%bring%money:-39 %bring%odometer:-23 %bring%on_way:-32 %bring%phone:16 %bring%question:37 %bring%refuse:71
%bring%shift_it:-17 %bring%who:26 %bring%wrong_one:36 %busy:43 %busy%call_off:16 %busy%fails:36 %busy%how_long:27
%busy%message:-14 %busy%money:18 %busy%on_way:-18 %busy%question:-26 %busy%refuse:-29 %busy%staff:-27
%busy%wrong_one:27 %call_off:14 %call_off%car:-36 %call_off%doubt:38 %call_off%elsewhere:-40 %call_off%fails:-93
%call_off%family:51 %call_off%gone_car:47 %call_off%how_long:70 %call_off%leave_me:-21 %call_off%lift:52
%call_off%machine:15 %call_off%meaning:34 %call_off%message:-35 %call_off%money:23 %call_off%on_way:59
%call_off%opening:76 %call_off%question:175 %call_off%refuse:-39 %call_off%shift_it:-32 %call_off%staff:65
%call_off%start_again:46 %call_off%thanks:493 %call_off%wrong_one:77 %car:-23 %car%do_it:-18 %car%elsewhere:24
%car%gone_car:-104 %car%lift:-32 %car%on_way:-19 %car%refuse:-171 %car%season:20 %car%staff:22 %car%start_again:26
%car%thanks:41 %car%who:28 %car%wrong_one:-59 %car_part:-61 %car_part%elsewhere:-26 %car_part%fails:-44
%car_part%how_long:-20 %car_part%leak:-21 %car_part%leave_me:165 %car_part%lift:-15 %car_part%meaning:-37
%car_part%message:233 %car_part%money:-29 %car_part%noise:17 %car_part%on_way:-23 %car_part%place:-39
%car_part%refuse:53 %car_part%shift_it:44 %car_part%smoke_smell:-45 %car_part%start_again:40 %car_part%thanks:72
%car_part%wrong_one:55 %do_it%doubt:33 %do_it%elsewhere:-89 %do_it%fails:41 %do_it%family:-97 %do_it%gone_car:-72
%do_it%how_long:-16 %do_it%leak:-24 %do_it%leave_me:35 %do_it%message:21 %do_it%noise:-18 %do_it%odometer:-28
%do_it%question:28 %do_it%refuse:18 %do_it%season:18 %do_it%shift_it:18 %do_it%staff:-62 %do_it%start_again:47
%do_it%thanks:39 %doubt:41 %doubt%family:-21 %doubt%how_long:-20 %doubt%leave_me:-20 %doubt%message:-16
%doubt%money:37 %doubt%on_way:-35 %doubt%question:123 %doubt%refuse:107 %doubt%staff:-21 %doubt%start_again:24
%doubt%thanks:40 %doubt%wrong_one:86 %elsewhere:119 %elsewhere%family:68 %elsewhere%gone_car:21 %elsewhere%money:-24
%elsewhere%odometer:63 %elsewhere%place:-42 %elsewhere%thanks:40 %elsewhere%who:39 %elsewhere%wrong_one:-51
%fails:-104 %fails%on_way:54 %fails%place:-25 %fails%question:15 %fails%refuse:-23 %fails%shift_it:30
%fails%thanks:20 %family%gone_car:-15 %family%noise:-21 %family%odometer:37 %family%place:20 %family%refuse:31
%family%season:28 %family%shift_it:-21 %family%staff:118 %family%start_again:31 %family%who:-35 %family%wrong_one:-20
%gone_car:-126 %gone_car%how_long:-18 %gone_car%odometer:73 %gone_car%on_way:21 %gone_car%question:79
%gone_car%refuse:43 %gone_car%season:-17 %gone_car%staff:36 %gone_car%thanks:80 %gone_car%who:81
%gone_car%wrong_one:72 %how_long%lift:-14 %how_long%on_way:28 %how_long%opening:35 %how_long%phone:21
%how_long%question:-14 %how_long%refuse:78 %how_long%season:-20 %how_long%staff:-14 %how_long%who:14 %leak:-29
%leak%noise:17 %leak%question:17 %leak%wrong_one:16 %leave_me:-17 %leave_me%message:39 %leave_me%money:-30
%leave_me%on_way:20 %leave_me%question:-14 %leave_me%shift_it:35 %leave_me%start_again:-32 %leave_me%wrong_one:57
%lift:-55 %lift%on_way:-14 %machine:-36 %machine%staff:-24 %meaning:-17 %meaning%noise:14 %meaning%phone:-21
%meaning%thanks:14 %message:-67 %message%question:-33 %message%refuse:-185 %message%shift_it:-19 %message%staff:14
%message%start_again:-68 %message%wrong_one:-54 %money:61 %money%on_way:71 %money%pay_day:-22 %money%phone:-15
%money%question:29 %money%refuse:127 %money%season:28 %money%shift_it:-21 %money%staff:34 %money%thanks:24
%money%wrong_one:56 %noise:-53 %noise%odometer:-25 %noise%question:-22 %noise%refuse:-19 %noise%staff:24
%noise%thanks:24 %odometer:17 %odometer%refuse:25 %odometer%season:41 %odometer%staff:80 %odometer%who:-14 %on_way:14
%on_way%place:-50 %on_way%refuse:135 %on_way%shift_it:55 %on_way%start_again:71 %on_way%thanks:-22
%opening%question:16 %opening%refuse:92 %pay_day:-82 %pay_day%refuse:-28 %pay_day%season:-29 %pay_day%shift_it:-17
%pay_day%thanks:19 %phone:-141 %phone%refuse:17 %phone%shift_it:-41 %phone%start_again:28 %phone%who:28
%phone%wrong_one:-37 %place:-25 %place%refuse:14 %place%thanks:18 %question:-146 %question%refuse:-25
%question%staff:70 %question%start_again:67 %question%thanks:149 %question%who:58 %question%wrong_one:101 %refuse:364
%refuse%staff:30 %refuse%start_again:16 %refuse%thanks:17 %refuse%who:-14 %refuse%wrong_one:-29 %season:-43
%season%thanks:25 %season%wrong_one:16 %shift_it:55 %shift_it%start_again:15 %shift_it%thanks:31
%shift_it%wrong_one:21 %smoke_smell:-32 %staff:55 %staff%thanks:18 %staff%who:44 %staff%wrong_one:55 %start_again:-61
%start_again%wrong_one:62 %thanks:-17 %thanks%who:56 %thanks%wrong_one:44 %who:-17 %who%wrong_one:24 %wrong_one:-98
@?:-116 @after_visit:-447 @car:-32 @confirm:-639 @confirm_stop:166 @day:23 @later:-173 @nothing:-302 @odometer:-69
@offers:107 @offers_:-54 @reading:-35 @time:-73 @times:-280 ^_$:-60 ^_a:62 ^_abren:-32 ^_ahi:-26 ^_ahora:-54
^_ahorita:-43 ^_any:-100 ^_anything:46 ^_appreciate:50 ^_aqui:-91 ^_are:-22 ^_as:158 ^_asi:199 ^_ask:23 ^_bless:-14
^_both:-81 ^_buenas:-15 ^_call:-25 ^_can:-62 ^_cant:113 ^_como:-159 ^_con:19 ^_cost:-25 ^_could:-14 ^_count:39
^_cualquiera:-16 ^_cuanto:-27 ^_de:-100 ^_deje:-14 ^_dejeme:-14 ^_did:-36 ^_do:-107 ^_does:-17 ^_dont:118
^_either:-154 ^_es:-16 ^_ese:32 ^_eso:21 ^_estoy:15 ^_fine:-32 ^_first:-32 ^_found:60 ^_friday:-14 ^_go:-15
^_going:122 ^_good:-40 ^_got:-25 ^_gracias:-166 ^_hace:-19 ^_had:-23 ^_hard:38 ^_hasta:-16 ^_have:-15 ^_how:-64
^_i:16 ^_id:52 ^_if:-38 ^_im:87 ^_is:-106 ^_it:-70 ^_just:-34 ^_la:-64 ^_last:-43 ^_le:25 ^_leave:62 ^_lets:15
^_lo:-61 ^_lol:-25 ^_los:-17 ^_me:-162 ^_mejor:106 ^_mi:47 ^_mil:-47 ^_muchas:-28 ^_muy:155 ^_my:-28 ^_nada:20
^_nd:-33 ^_need:-32 ^_neither:177 ^_nel:102 ^_never:22 ^_ni:214 ^_ninguna:77 ^_ninguno:57 ^_no:220 ^_none:121
^_nop:64 ^_not:90 ^_nothing:53 ^_nunca:-21 ^_oil:-15 ^_ok:-147 ^_on:24 ^_only:73 ^_option:-24 ^_para:119 ^_parar:-14
^_paso:37 ^_pass:55 ^_please:-16 ^_por:-163 ^_precio:-18 ^_prefiero:44 ^_price:-24 ^_puedo:-56 ^_pues:-16 ^_put:-29
^_que:-45 ^_quiero:-22 ^_quit:28 ^_se:-51 ^_second:-17 ^_si:-158 ^_simon:-19 ^_solo:36 ^_somebody:-16 ^_someone:-37
^_sorry:-21 ^_sounds:-22 ^_sure:79 ^_tengo:51 ^_text:16 ^_thanks:-252 ^_that:112 ^_there:-55 ^_those:-30
^_thumbsup:-41 ^_thursday:38 ^_todavia:-47 ^_too:174 ^_we:98 ^_were:147 ^_what:-118 ^_who:-21 ^_why:-57 ^_will:-62
^_wont:34 ^_works:-38 ^_y:-43 ^_ya:-86 ^_yeah:114 ^_yep:-45 ^_yes:-118 ^_yo:87 ^_you:-67 ^_your:-71 ^_zero:50 a:62
a_$:-15 a__after:24 a__day:-15 a__el:-18 a__en:20 a__for:26 a__hora:52 a__horas:39 a__one:-18 a__que:48 a__taller:-15
a__time:-60 a__to:-18 a_customer:-24 a_esa:60 a_esas:43 a_ese:-24 a_good:-91 a_guy:104 a_hacer:20 a_la:-34
a_loaner:-16 a_los:17 a_mechanic:29 a_mi:15 a_no:39 a_price:-17 a_ride:-15 a_ser:33 a_set:-17 a_top:20 a_year:21
about:62 about__tires:43 about_it:-66 about_oil:44 about_the:50 abren:-28 accident:-21 aceite:52 aceite_$:56
acomoda:33 actually:36 afford_it:-24 after:17 after_$:-14 after_all:22 again:-17 again_$:-43 agarra:-25 agendeme:-37
aguanta:-18 ahead_and:-21 ahi:-21 ahi_$:68 ahi__vemos:-19 ahi_nos:-25 ahi_paso:-37 ahora:-78 ahora_$:-39 ahora_no:-79
ahorita:-85 ahorita_$:-38 ahorita_no:-44 al:55 algo:-30 alguien:24 all:144 all_$:-21 all__on:14 all__them:-30
all_day:-49 all_set:162 along:-15 already_$:-21 already_did:-32 alright:17 also:40 am:-34 am_$:-23 amable:-31
amable_$:-35 amables:-29 amigo:16 amigo_$:16 amor:16 an:41 an__change:-21 an_appointment:58 an_oil:-21 and:14
and__i:29 and__is:27 and__it:-22 and_can:14 and_did:-31 and_it:-21 and_nobody:14 and_not:35 and_please:27 and_why:16
and_you:14 anda:26 andan:16 ando:28 ando_de:18 another:-24 another_shop:-15 answer:28 antes:-37 antes_$:18
antes_de:-17 any:-80 any__but:-20 any__of:-14 any__them:38 any__those:-68 any_day:-29 any_of:-17 anymore:-16
anymore_$:-16 anything_$:-15 anyway:122 anyway_$:117 apenas:21 appointment:36 appreciate:23 apunteme:-21 aqui:-157
aqui_$:-62 aqui_no:-104 are:-17 are_$:-32 are__hours:17 are_fine:-27 around:24 around_$:25 arreglaron:-57 arregle:-14
arreglo:57 as:144 asi:318 asi__no:20 ask:-42 ask_me:-14 asked:-23 asked_for:-20 at:-63 at_$:-22 at_all:-34 at_the:-53
atencion:16 aunque:27 away:31 ayer:-37 ayer_$:-16 b:-16 back_$:-38 barato:21 bateria:-21 be:66 be_$:56 be__that:28
be__there:51 be_coming:14 be_there:-20 been:-31 been__your:-15 been_to:-15 before:-35 bendiciones:-14 best:-15
bien:102 bien_asi:27 bien_gracias:74 bill:-24 bless:-15 book:-36 book_it:-32 booking:17 boss:-16 both:-97 both_$:-18
bother:57 bought:-19 bought_it:-18 brakes:-23 brakes_$:-15 brakes__a:19 brakes_are:-16 bring:-30 bucks:16 buen:-31
buenas:-15 busco:18 busy:-46 but:191 but__is:23 but__much:28 but_how:26 but_ill:49 but_monday:-39 but_no:69
but_what:39 buy:18 by:-52 by__name:-31 by_my:-14 by_that:-31 cada:-15 call:-53 call_me:-28 cambia:14
cambie__opinion:14 cambie_de:14 cambio:46 cambio__aceite:42 cambios:-44 can:17 can__come:14 can__it:17 can__me:26
can__with:24 can_i:-18 cancel:-21 cant:107 cant__in:17 cant_do:155 cant_make:35 car:36 car_$:-25 car_is:87 card:27
cards:21 cards_$:21 care_of:-19 caro:195 caro_$:114 carro:-16 carro_$:-38 carro__de:17 cars:20 cars_$:18 casa:62
casa_$:54 casi:24 casi_no:25 caso:89 caso_$:81 catch:-24 chance:21 change:-14 change_$:-24 changed__mind:28
changed_my:23 changes:42 changes_$:66 charge:-24 charged:-18 check:-26 checked:14 chiste:14 choque:-46 church:33
cita:48 claro_$:-14 claro__si:16 cliente:-37 cobran:20 cobran_$:24 cobraron:17 cochera:24 cochera_$:24 come_in:24
coming:45 coming__the:14 coming_in:14 como:-164 como_no:-165 como_si:23 company:14 complaints:-14 con:56
con__mecanico:-38 con__que:18 con_lo:18 con_mi:-17 con_un:72 con_ustedes:-18 conmigo:27 conmigo_$:27 conozco:-91
conozco_$:-52 contact:-17 conviene:53 cost:-34 cost_$:-19 could_you:14 count:39 count_me:39 covered_$:21 crazy:14
creo:35 cualquiera:-17 cuando:-22 cuanto_$:-14 cuanto__a:14 cuanto_es:23 cuanto_rato:20 cuanto_seria:19 cuenta:-18
customer:-38 customer_$:-19 da:-59 dar:20 daughter:14 day:-21 day_$:-25 day_but:-20 day_for:59 days:14 de:31
de__dos:25 de__lo:-18 de__me:43 de__no:-49 de__que:20 de__taller:-29 de__ya:27 de_aceite:25 de_dinero:-16 de_donde:17
de_eso:24 de_esos:14 de_las:68 de_los:33 de_noche:32 de_opinion:14 de_que:-28 de_semana:16 dealer:71 decided:70
dejaron:15 deje:-20 dejelo:108 dejelo_asi:44 dejeme:-14 dejo:87 desk:19 despues:-21 di:-21 dia:43 dia_$:26 dia__a:20
dialisis:15 dias:-16 dice:14 did:-124 did_it:-39 did_that:-21 did_the:-40 didnt:-16 diga:-20 digame:-19 dije:31
dije_que:37 dime:63 dinero_$:-36 do:55 do_$:-77 do__do:15 do__guys:-29 do__need:-45 do__of:73 do_any:39 do_friday:15
do_i:-62 do_my:138 do_not:-39 do_that:25 do_you:-14 does__cost:-14 does_it:-30 doesnt:91 doesnt_work:101 doing:43
domingo:-19 done:-22 done_$:22 done_at:-15 dont:39 dont__a:-42 dont__any:-22 dont__it:109 dont__me:-76 dont__to:17
dont__you:-24 dont__your:98 dont_have:-77 dont_know:-49 dont_need:40 dont_own:-26 dont_see:-24 dont_stop:71
dont_text:-56 dont_think:100 dont_want:44 dos_veces:-17 down:-109 down_$:-79 drive_$:-24 drive_to:14 driving:-16
driving_with:-17 drop:-17 dueno:-17 dueno_$:-15 earlier:-32 early:55 early_$:63 early_for:33 either:-129 el:-51
el__a:15 el__es:47 el__lo:21 el__no:34 el__pasado:20 el_aceite:50 el_ano:22 el_cambio:-23 el_carro:23 el_dia:-19
el_dinero:16 el_freno:-15 el_jueves:41 el_mas:-14 el_mecanico:-29 el_otro:-18 el_precio:-14 el_sabado:-42
el_servicio:-15 el_trabajo:-25 el_viernes:44 else_$:40 elsewhere:49 elsewhere_$:42 en:30 en__casa:79 en__cochera:16
en_el:20 en_la:57 en_mil:15 en_otro:-19 en_que:14 end:-22 engine:-15 entiendo:-36 entran:-47 entro:17 entro_$:17
es:-29 es_$:-69 es__de:19 es__el:16 es__mi:-14 es__numero:-17 es_de:-22 es_eso:18 es_mi:-20 es_necesario:41 esa:83
esa__no:36 esa_hora:55 esas:76 esas_horas:48 escriban:-43 escriban_$:-23 ese:22 ese_$:-14 ese_carro:18 ese_dia:28
ese_taller:-17 eso:72 eso_$:31 eso_me:22 esos:57 esta__caro:92 esta__no:17 esta_bien:-64 esta_muy:26 esta_semana:-25
esta_tirando:-15 estamos:102 este:-68 este_numero:-18 esto:-27 esto_$:-17 estos:-14 estoy:82 estoy_bien:132
estoy_de:-21 even:40 ever:79 ever_$:81 every:17 fall:16 falta:-14 favor:37 favor_$:48 fee:-24 feel:-17 feel_like:-15
feels:-14 feria:-62 fin:14 fin__semana:16 fin_de:15 fine:144 fine_$:56 fine__me:-37 fine_with:-27 first:-63
first_$:-30 fix:78 fix_it:61 fixed:-69 fixed_it:-29 flat:16 flat_out:30 fleet:16 fluid_$:23 for:139 for_$:-21
for__i:-15 for__me:-29 for__of:29 for_a:20 for_an:-19 for_it:-69 for_me:194 for_my:18 for_nothing:-21 for_now:50
for_that:123 for_the:-51 for_this:36 forget:28 forget_it:60 found:82 free:-14 frena:-17 freno:-45 freno_$:-37
frenos:-17 friday:23 friday_$:98 friday_instead:-27 fue:15 full:21 funny:18 gano:15 garage:36 garage_$:24 gas:-15
gauge:-34 gave:40 gear:-15 gear_$:-15 get:-40 getting:23 go:-51 go_$:15 go__the:43 go_for:-28 go_to:50 going:59
going__be:-20 going__cost:-22 going__have:38 going__need:-16 going_on:-31 going_to:85 good:50 good_$:97 good__me:-19
good_for:-43 good_to:-19 got_a:108 got_it:-22 got_my:-20 gracias:-28 gracias_$:-28 gracias__no:24 gracias__ya:41
gracias_pero:57 gracias_por:-19 gracias_ya:25 grasa:15 gratis:29 great:19 gusta:26 gusto:-25 guy:90 guy_$:53
guys_$:-43 guys_do:-23 hablamos_$:18 hablan:-22 hable:18 hablo_$:-16 hace:-59 hace_falta:32 hace_un:-24 haciendo:14
had:-38 had__done:28 had_it:17 hago:56 hago_$:66 handled:-24 happy:-55 hard:47 has:-21 hasta:-32 hasta_que:-14
hate:16 have:42 have__a:23 have__car:-14 have__owner:25 have__say:31 have_a:-34 have_an:55 have_got:22 have_it:-52
have_never:-26 have_no:-42 have_someone:65 have_time:-26 have_to:28 hay:-58 hay_problema:-26 he:-17 he_ido:-17
here:-37 hijo:38 him:-31 hizo:-18 hora:26 hora_no:19 horas:60 hospital_$:-18 hot:-35 hour:20 hours:25 how:44
how__is:62 how__was:29 how__would:19 how_about:-32 how_long:-25 how_low:15 how_much:16 hoy:26 hoy_$:28 i:-25 i__a:50
i__do:45 i__got:37 i__have:-24 i__it:-17 i__know:-16 i__like:-18 i__my:51 i__never:38 i__no:-33 i__on:29 i__see:-17
i__that:-26 i__this:-21 i_am:-17 i_can:27 i_do:75 i_dont:-58 i_feel:-15 i_get:-21 i_go:47 i_got:61 i_had:-29
i_have:14 i_just:34 i_like:31 i_need:-109 i_said:-29 i_think:-21 i_want:-75 i_will:60 iba:20 id:59 id__not:43
id__talk:-37 id__to:20 id_like:20 id_rather:23 idea:-99 ido:-17 if:87 if_i:-40 if_you:-22 igual_$:-31 igualmente:-16
ill:69 ill__it:79 ill__out:-18 ill__there:-36 ill__you:-20 ill_be:-28 ill_let:21 ill_pass:66 ill_take:74 im:198
im__a:-20 im__for:24 im__it:29 im__of:-36 im__the:-70 im__with:-18 im_all:34 im_good:268 im_not:-110 im_out:-31
imposible:58 in_$:-23 in__day:74 in__garage:27 in__so:25 in_law:22 in_my:-19 in_the:95 instead:-20 instead_$:-29
interesa:-45 interesa_$:-55 interest:17 interested:20 interested_$:-22 into:62 ir:-27 ir_$:-16 is:-44 is_$:52
is__a:-75 is__at:16 is__but:-19 is__going:-47 is__how:76 is__no:42 is__out:-15 is__so:21 is__to:-14 is_a:97
is_been:-18 is_fine:72 is_good:-67 is_my:21 is_not:-67 is_ok:24 is_that:-37 is_the:19 is_there:-54 is_too:118
is_when:25 isnt:29 it:58 it_$:-25 it__a:38 it__all:-18 it__i:-20 it__in:-15 it__me:-33 it__my:16 it__no:29 it__ok:18
it__this:52 it__to:-83 it_and:28 it_anymore:14 it_at:21 it_be:16 it_but:40 it_done:30 it_for:-45 it_going:-30
it_is:74 it_myself:51 it_off:18 it_on:33 it_over:15 it_so:21 it_take:-28 it_wont:-48 jefe_$:17 job:-22 job_$:-19
jueves:28 jueves_$:-22 just:50 just_had:-19 k:-26 k_$:-14 keep:60 keep_texting:18 keep_them:15 keeps:-16 know:-87
know_$:-22 know_you:-29 la:55 la__con:15 la__de:-36 la__en:-17 la__las:19 la__no:-54 la__que:-14 la__vez:16 la__y:28
la_atencion:19 la_bateria:-20 la_casa:64 la_cochera:24 la_luz:-30 la_manana:-14 la_pena:56 la_persona:-14
la_puerta:21 las:70 las_$:-44 las__el:34 las__en:-15 las_llantas:51 las_puedo:21 last_month:18 last_week:-14
last_year:25 late:39 late__me:22 law:21 le:36 le__el:46 le__que:30 le_cambio:50 le_falta:-43 le_voy:25 leaking:-16
leaks:15 leave:110 leave__alone:-26 leave_it:133 leave_me:-51 lejos:44 let_me:-44 lets__it:-14 lets_do:-18 like:25
like_it:-22 like_to:21 live:28 llamenme_$:-19 llanta:-16 llantas:46 llantas_$:42 llego:-17 llevarlo:19 lleve:-38
llevo:58 lo:57 lo__asi:24 lo__ayer:-15 lo__con:46 lo__de:-17 lo__hace:-18 lo__mi:-36 lo__para:16 lo__y:-28 lo__ya:-34
lo__yo:55 lo_arreglo:58 lo_cambie:-16 lo_cambio:14 lo_choque:-46 lo_dejo:16 lo_hago:70 lo_hicieron:-17 lo_hizo:-24
lo_lleve:-37 lo_llevo:47 lo_necesito:-38 lo_que:37 lo_voy:34 loaner:-17 loaner_$:-14 loco:127 lol:45 lol_$:38
long:-34 longer:-68 longer__it:-46 longer__the:-27 longer_have:-33 looked:-16 looking:-28 looks:21 los__me:38
los__no:21 los_cambios:-44 los_conozco:-39 los_dos:26 los_frenos:-29 lost:-15 low:14 luego:-14 lunes_$:-14 luz:-32
luz_de:-29 maam:17 made:-15 make_it:-23 mal:-33 mal_$:-23 manana:-25 manana_$:-17 manana__me:17 mandando:41
mandando_$:60 manden:-41 manden_$:-17 manden_mas:-20 manden_mensajes:38 manden_nada:-38 mandenme:36 manejo:-35
mano:16 many:-32 marcha:-61 marcha_$:-56 martes:-22 mas:-88 mas_$:-62 mas_temprano:-15 matter:-39 maybe:-16 me_$:-92
me__de:30 me__el:20 me__en:-21 me__falta:24 me__for:21 me__hicieron:-19 me__im:-16 me__la:50 me__las:16 me__mal:25
me__mas:-52 me__mensajes:39 me__muy:-23 me__my:-16 me__nada:-101 me__the:36 me__we:14 me_about:149 me_acomoda:33
me_again:-22 me_at:-15 me_back:-24 me_but:27 me_cobraron:25 me_conviene:43 me_dejaron:15 me_es:24 me_escriban:-14
me_gusta:26 me_hable:19 me_hace:20 me_im:15 me_in:-32 me_interesa:-49 me_llame:18 me_lo:46 me_off:-21 me_on:16
me_out:37 me_please:-15 me_queda:63 me_rayaron:22 me_sale:-38 me_sirve:58 me_sirven:20 me_so:-26 me_up:-18
me_with:-14 meant:-21 mecanico:39 mecanico_$:54 mechanic:17 mejor:93 mejor__las:-16 mejor_a:-16 mejor_llamenme:-21
mejor_me:20 mejor_no:32 mensajes:-23 mensajes_$:-61 mes:-20 messages:-15 meter:16 meto:17 mi:19 mi__de:-17 mi__es:55
mi__lo:-15 mi__me:28 mi_hijo:38 mi_mecanico:21 mi_numero:-20 mi_primo:-20 middle:-15 mil:-33 mil_gracias:-27
miles_$:-26 millas:16 mis:-14 mismo:25 mismo_le:14 momento:-102 momento_no:-64 monday:-37 mondays:69 money:16
money_$:22 more:-152 more_$:-103 more_texts:-14 morning:-20 morning_$:-14 mornings:-33 much:-23 much_$:-33
much__it:31 much_is:-20 much_would:22 muchas:-22 muchas_gracias:-22 must:-18 muy:251 muy_amable:-31 muy_caro:95
muy_temprano:138 my:108 my__back:-19 my__for:16 my__in:20 my__is:-21 my__oil:45 my__says:59 my_boss:-20 my_car:-45
my_cousin:-17 my_daughter:15 my_mechanic:-15 my_mind:34 my_name:-21 my_number:41 my_own:126 my_tire:-15
my_warranty:20 my_wife:35 myself:81 myself_$:77 n:298 nada:59 name:-53 nd:-37 necesario:55 necesito:-32 need:-114
need_$:38 need__loaner:-15 need__ride:-15 need_a:-58 need_that:-34 need_to:-91 needed:69 needed_$:93 needing:21
negocio:20 neither:178 nel:102 never:18 never__to:-17 never_been:-19 new:-24 new__on:-20 next:-18 ni:260 ni_el:55
ni_la:34 ni_modo:-19 nice:117 night_$:-15 ningun:-55 ninguna:94 ninguno:72 ninguno__los:41 ninguno_de:44 no:118
no_$:358 no__ahora:-44 no__at:-58 no__bien:-41 no__carro:-20 no__cita:49 no__cliente:-25 no__como:-14 no__conmigo:24
no__conozco:-51 no__de:-17 no__dinero:-16 no__dont:27 no__el:-61 no__en:-59 no__esa:-14 no__good:40 no__gracias:37
no__hace:24 no__hago:-39 no__have:-27 no__here:-77 no__i:46 no__interesa:70 no__is:187 no__it:27 no__los:-25
no__mas:-24 no__me:49 no__mensajes:-35 no__mi:-16 no__nada:-20 no__ni:16 no__ningun:-66 no__no:30 no__para:-34
no__por:19 no__preocupe:22 no__problema:-34 no__que:-26 no__quien:-25 no__recibir:-62 no__tengo:25 no__texts:-18
no__the:48 no__them:23 no__tiempo:-25 no__to:-25 no__voy:77 no__was:33 no__what:28 no__y:41 no__ya:23 no__yo:-61
no__you:149 no_agarra:-25 no_and:105 no_but:69 no_car:-18 no_complaints:-14 no_conozco:-36 no_creo:36 no_el:-15
no_es:-120 no_esta:-41 no_frena:-17 no_gracias:234 no_hay:-73 no_i:134 no_idea:-65 no_im:49 no_it:19 no_just:40
no_keep:39 no_le:52 no_lo:36 no_longer:-68 no_los:-21 no_manden:-28 no_mas:-36 no_me:-63 no_mejor:-17 no_mi:20
no_more:-163 no_my:41 no_need:80 no_noise:-14 no_not:-92 no_ocupo:36 no_one:-88 no_para:20 no_pero:26 no_podre:-16
no_por:27 no_prende:-19 no_puedo:77 no_quiere:-22 no_quiero:-34 no_se:-83 no_si:63 no_sigan:24 no_soy:-208
no_tengo:-97 no_thank:68 no_thanks:183 no_that:47 no_tiene:-44 no_trae:14 no_traigo:-57 no_va:27 no_veo:-23 no_voy:32
no_way:57 no_what:106 no_worries:-102 no_y:25 no_ya:93 no_you:28 noche:21 noche_$:21 noise:-24 noise__all:-21
noise_at:-21 noises:38 nomas:49 none:141 none__them:39 none__those:27 none_of:80 nop:69 nop_$:54 nos:-18
nos_vemos:-27 not:-77 not_$:-37 not__at:36 not__car:-48 not__customer:-37 not__in:16 not__it:84 not__me:34
not__month:-17 not__now:-59 not__the:52 not__this:-32 not__to:102 not__yet:-43 not__you:-21 not_a:-65 not_at:55
not_coming:30 not_doing:46 not_for:53 not_friday:24 not_going:79 not_happy:-47 not_interested:93 not_my:-62
not_right:-82 not_sure:-46 not_the:-69 not_today:-48 not_yet:-142 nothing:20 nothing_$:-27 now:-111 now_$:-164
now__me:-39 number:-18 number_$:21 numero:-51 nunca_he:-16 o:27 october:-30 october_$:-29 ocupo_$:19 of:-21 of_it:-21
of_the:16 of_them:26 of_those:28 of_town:-26 of_you:-27 off:-27 off_$:-59 off_and:17 off_for:22 oiga:19 oil:48
oil_changes:44 ok_$:121 old:15 on_$:-33 on__now:-28 on__road:-19 on_a:-15 on_my:-31 on_that:54 on_this:59 one_$:19
one__those:29 one_of:34 only:95 only_$:17 only__me:60 opcion_$:-21 opt:-14 option:-30 or:-25 or_anything:31 or_no:-15
otro:21 otro_$:-26 otro_carro:19 otro_dia:56 our:21 out__town:-26 out_of:-42 over_$:-34 over_the:-20 overcharged:25
own:65 own_oil:45 owner:-33 para:71 para__lo:-41 para_el:-67 para_mi:18 para_que:-17 parar_$:-14 parts:-23 pasa:-39
pasa_si:-32 pasado:17 pasado_$:20 paso_$:18 pass:203 pass_$:112 passed:-44 pay:-17 paying:21 pedi:-15 pena:66
people:-41 perdon:-34 perdon_$:-25 perfect:-19 pero:106 pero__no:-16 pero_no:50 pero_ya:31 person:-19 persona:-29
please:-34 please_$:-27 please_dont:18 plug:15 poco:14 podre:-16 point:29 por:-112 por__no:-142 por__que:25
por_ahora:-72 por_el:-16 por_favor:42 por_que:-134 por_un:15 power:-18 precio:-23 precio_$:-18 precios:18 prefiero:47
prende:-44 prende_$:-24 preocupe:22 price:-66 price_$:-17 prices:65 primera:-14 primo:-21 problem:-57 problem_$:-54
problema:-40 pueblo:15 puedo:15 puedo_$:58 puedo_el:31 puerta:21 put:-63 put__in:-36 put_me:-21 put_new:-20 que:-77
que_$:29 que__eso:19 que__hable:19 que__le:-21 que__llame:17 que__lo:21 que__manden:-16 que__me:-18 que__si:-32
que__ya:21 que_cobran:31 que_es:-30 que_le:-22 que_lo:-27 que_no:-31 que_pasa:-32 que_si:31 que_taller:-17
que_tanto:-18 que_va:58 queda:82 queda_$:55 quedan:-18 quedo:-39 querer:20 quien:24 quien_es:-30 quien_me:46
quienes:-33 quienes_son:-33 quiero:-58 quiero_$:-15 quiero_cita:38 quiero_ir:16 quiero_recibir:-61 quit:19
quit__me:14 quit_sending:26 quitaron:20 quiten:21 rather:35 rather__to:-37 rather_not:42 rather_talk:-42 rato:31
rayaron:22 reach:-19 read:16 ready:-43 ready_$:-41 recall:-19 recibir:-77 recojo:27 reminders:57 reminders_$:63
replaced:-36 ride:-21 right:70 right_$:240 right__i:14 right_now:-145 road:-21 runs:23 sabado:-56 sabado_$:-43
said:14 said_no:-24 sale:-35 sale_$:-25 salgo:17 salgo_de:20 salir:-16 same:15 saturday:31 saturday_$:38 say_no:-34
says:54 schedule:-19 scrapped:-14 se:-134 se__es:-17 se__llevo:-14 se__que:-23 se_lo:-33 se_me:18 se_preocupe:22
seat:-15 second:-26 second_$:-47 see:-51 see_you:-15 segundo_$:-16 semana:-20 semana_$:-26 send:-28 send_me:-29
sending:37 sending_me:32 senor:26 sentado:14 ser:21 ser_$:24 sera:-17 seria:18 servicio:-15 servicio_$:-22 set:159
set_$:113 set_of:-17 shift_$:14 shop:-66 shop_$:-29 shop_is:-19 si:-158 si_$:-59 si__interesa:-19 si__lo:-28
si__no:-75 si_gracias:-15 si_me:22 si_no:-48 si_ya:-38 siempre:16 siento:20 sigan:39 sigan_mandando:30 sign:-21
sign__up:-16 sign_me:-21 sigue:-16 siguen:23 simon:-19 since:23 sir:28 sir_$:28 sirve:14 sirve_$:19 sirven:23 sit:25
skip:60 skip_it:27 so:139 so_$:31 so_much:-30 so_no:133 so_you:17 sold:-99 sold_$:-15 solo:77 someone:57
something:-18 somewhere:52 son:-40 son_$:-24 soon:38 sorry:68 sorry_$:91 sorry__is:-28 sounds:-25 sounds_good:-31
soy:-212 soy__persona:-37 soy_cliente:-27 soy_de:14 soy_el:-30 soy_esa:-23 soy_la:-18 soy_yo:-57 squeak:58
squeaking:14 st:-33 st_$:-32 stay:21 still:-37 stop:-32 stop_$:-94 stop__me:72 stop__the:65 strike:18 stuff:36
stuff_$:14 su:42 super:-28 sure:17 swapped:-28 take:22 take__off:-41 take_me:-40 take_my:107 take_the:-19 taken:-15
taken__of:-15 taken_care:-15 talk:-51 talk_to:-44 taller:-41 taller_$:-14 tan:-22 tanto:-19 tarde:42 tell:-21
temprano:66 temprano_$:50 tendra:-17 tengo:21 tengo_carro:-26 tengo_tiempo:-25 text_$:-14 text__about:76 texting:26
texting_$:-49 texting_me:57 textos:-14 texts:-39 texts_$:-41 th:-43 th_$:-23 thank:39 thank_you:45 thanks:-43
thanks_$:-64 thanks__nothing:-21 thanks_a:-16 thanks_but:77 thanks_for:-78 thanks_it:14 that__a:24 that__me:17
that__my:20 that__when:22 that__you:31 that_day:-27 that_in:-23 that_is:57 that_name:-31 that_one:25 that_works:-18
that_would:-35 the_$:-17 the__change:18 the__for:151 the__is:72 the__not:15 the__of:-26 the__service:15 the__thing:20
the__time:-19 the__went:32 the_car:73 the_day:67 the_dealer:66 the_earlier:-22 the_garage:28 the_later:-16
the_middle:-15 the_owner:-32 the_price:-18 the_reminders:-17 the_same:19 the_second:-14 the_th:-42 the_thursday:15
the_tire:43 the_tires:26 the_way:18 the_wheels:23 the_whole:17 the_wiper:30 the_work:-34 them_$:45 then_$:47
there:-83 there_$:14 there__a:-14 there__no:-39 there_a:-47 there_is:-49 these_days:16 they:-18 theyre:22 thing:26
thing_$:36 think:-70 think__is:-21 think__it:-87 think_about:-65 thinking:34 this__again:15 this_is:-53
this_month:-19 this_number:-24 this_one:49 this_time:57 this_week:-44 those:69 though:37 though_$:17 thought:27
thousand_miles:-18 three:57 three_$:47 through:-41 thumbsup:-41 thumbsup_$:-41 thurs:-18 thursday:30 thursday_$:22
thursday__work:58 thursday_at:-28 tiempo:-29 tiene:-45 tienen:43 tight:-16 time:23 time_$:52 time__week:-18
time_i:-17 times_$:25 tio:20 tirando:-16 tire:17 tires:14 tires_$:21 to:-83 to__a:-24 to__for:-14 to__in:37 to__it:69
to__me:-25 to__no:52 to__off:-15 to__shop:-17 to__this:18 to__to:20 to_a:-18 to_be:-32 to_cost:-22 to_do:43
to_drive:14 to_fix:26 to_have:36 to_it:-15 to_keep:16 to_know:-20 to_leave:16 to_need:-16 to_pay:-16 to_say:70
to_someone:-20 to_stop:-26 to_that:-72 to_the:29 to_your:-16 todavia:-49 todavia_no:-47 today:-45 today_$:-44
todos:24 told:-14 tomorrow:-15 too:269 too_$:-47 too__for:148 too_early:124 too_late:65 too_much:-16 took:-27
took__of:-24 took_care:-21 top:38 town:-32 town_$:-24 trabajando:31 trabajo_en:16 traigo:-64 transmission:15 tread:15
trip:-22 troca_$:-14 truck:-15 try:154 tu:26 tues:-17 turn:-23 turned:-18 ultima:-15 un:49 un__de:19 una:-16
under:-32 uno:18 up:-61 up_$:-37 up_for:-14 uphill:-20 use:22 uso:18 ustedes:-58 ustedes_$:-49 va:89 va_$:50
va__ser:19 va_a:15 va_en:24 vacaciones:-19 vale:59 van:-24 ve:24 veces:-15 vehicle:-35 velocidad:-16 velocidad_$:-16
vemos:-30 vemos_$:-28 vender:16 vendi:-27 ver_$:14 vez:25 vez_me:20 viernes:25 viernes_$:41 voy:19 voy_$:-53 voy_a:69
want:-47 want_it:62 was__for:-19 was_it:21 was_the:30 way:63 we:107 we__it:-18 we__that:-14 we__the:25 we_dont:-31
we_have:76 we_will:105 week:-59 week_$:-58 weekend:-15 weekend_$:-15 went_away:35 were:126 what:49 what__it:43
what__that:-14 what_it:16 what_was:18 wheel:-24 wheels:17 when:71 when_i:-30 when_it:-15 while:-37 who:59
who__are:-33 who__this:30 who__you:61 who_is:22 who_you:-51 whole:23 whole_thing:18 why:-63 why_does:-14 why_is:16
why_not:-90 why_would:23 wife:28 wife_says:44 will:33 will__be:54 will__it:26 will__take:-19 will_do:-50 will_it:-34
will_the:-18 wiper:30 wipers:42 with:-23 with_it:15 with_me:-29 with_someone:-19 with_the:45 without:18 wont:54
wont__over:-32 wont__there:19 wont_be:88 wont_go:-36 wont_turn:-15 wont_work:62 word:15 work:56 work_$:17 work__me:42
works:-31 works_$:-45 worries:-102 worth:161 would:-16 would_be:-46 would_it:26 wrong:-32 y:-17 y_$:-17 y__es:20
y__no:-33 y_cuanto:15 y_que:36 y_ya:-25 ya:-69 ya__de:35 ya__gracias:38 ya__hace:-39 ya__la:-16 ya__lleve:-37
ya__lo:-42 ya__manden:-14 ya__me:-19 ya__quiero:-36 ya__voy:-14 ya_le:-17 ya_lo:-61 ya_no:-67 ya_quedo:-20
ya_tengo:81 yeah:-14 yeah_$:-184 yeah_no:16 year:40 year_$:36 yep:-45 yep_$:-21 yes:-158 yes_$:-82 yes_all:-15
yet:-192 yet_$:-156 yo:138 yo_$:-57 yo__le:55 yo__soy:-53 yo__tengo:-21 yo_mismo:26 yo_ni:-62 yo_no:-102 you:-66
you_$:-51 you__a:-15 you__do:-28 you__it:-52 you__my:32 you__no:14 you__on:-16 you__what:19 you_are:-30 you_can:49
you_have:-14 you_must:-16 you_my:68 you_need:-21 you_said:14 you_think:-46 you_to:-23 your:39 your__for:16
your__have:-31 your__is:-21 your_hours:17 your_shop:-30 yours:-27 zero:82
"""
