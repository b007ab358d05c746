"""What speaks for and against `decline`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "decline"
BIAS = -151
WEIGHTS = """\
#abad:-29 #aben:28 #abin:31 #abla:-47 #able:-52 #abou:77 #acci:-29 #aced:-46 #acei:74 #acer:65 #acha:32 #acia:-45
#acom:28 #actu:45 #ador:31 #afir:-28 #afte:48 #agai:29 #agar:-67 #agen:-47 #agra:33 #agua:-43 #ahor:-191 #aigo:-83
#aile:27 #ains:64 #aken:-29 #aler:70 #algu:44 #alig:38 #alir:-30 #alke:44 #alle:-42 #allo:29 #alls:118 #alqu:-34
#alri:25 #also:53 #alta:-56 #amab:-59 #ambi:-27 #amos:143 #anag:32 #anca:-34 #ance:89 #anda:92 #ando:-40 #ands:-33
#anej:-67 #anic:64 #anks:-68 #answ:53 #ante:-39 #anym:-49 #anyw:129 #apen:29 #aper:48 #appo:45 #appr:30 #appy:-53
#aqui:-216 #arag:59 #arca:-31 #arch:-91 #arde:32 #ardl:32 #arel:40 #arge:-39 #aria:-32 #ario:54 #arli:-49 #arlo:36
#arly:74 #arra:-94 #asad:42 #asia:27 #aske:-28 #asse:-58 #aste:139 #athe:42 #atis:28 #ativ:167 #atte:-59 #atur:40
#auge:-44 #aunq:28 #avia:-48 #avor:32 #away:33 #ayer:-47 #bado:-29 #bare:40 #beat:32 #been:-54 #beer:31 #befo:-50
#bien:110 #bios:-51 #blan:-44 #blem:-98 #bles:-39 #bloo:33 #book:-25 #both:-47 #boug:-26 #bout:77 #brak:-39 #brea:-28
#brin:-45 #bsup:-43 #buen:-56 #busy:-52 #bvio:-25 #cabi:31 #cach:29 #caen:25 #call:42 #came:-37 #canc:-28 #cand:-57
#cani:48 #cant:134 #carc:29 #card:35 #caro:244 #carr:31 #cars:35 #casa:79 #caso:99 #ccid:-25 #ceit:74 #cesa:63
#cesi:-36 #cess:36 #chan:147 #char:-48 #chas:-27 #chea:50 #cher:32 #choq:-44 #chur:30 #cias:-40 #ciat:33 #cibi:-112
#cide:61 #cido:65 #cita:60 #clie:-52 #clin:28 #coch:34 #comi:47 #como:-146 #comp:60 #cond:-39 #conm:32 #cono:-67
#cont:-67 #conv:68 #cool:-31 #corr:-37 #cosa:25 #cost:-70 #coun:44 #coup:-27 #cove:35 #cran:-32 #crat:43 #creo:63
#crib:-87 #ctio:-25 #ctob:-31 #ctua:52 #cual:-46 #cupe:62 #cupo:47 #curi:80 #cust:-48 #dale:-32 #dand:77 #davi:-41
#days:133 #ddle:-34 #deal:57 #deci:127 #deja:136 #deje:157 #dejo:94 #delo:64 #dema:51 #deme:-28 #denm:37 #dent:-46
#ders:71 #dese:35 #desp:-25 #dial:47 #dias:27 #diga:-34 #dime:69 #ding:133 #dled:-29 #dles:38 #dnes:26 #does:97
#dogs:28 #doin:88 #done:-33 #dont:69 #door:-25 #doub:-140 #down:39 #dson:-29 #dude:-75 #dule:-29 #eady:-31 #eaks:28
#eale:69 #eape:50 #eate:35 #eave:184 #ecal:101 #ecan:47 #eces:63 #ecia:27 #ecib:-116 #ecid:105 #ecir:26 #econ:-39
#ecti:-25 #ecto:-25 #edan:-26 #eded:65 #edes:-46 #edin:36 #edne:26 #edul:-29 #eede:65 #eedi:36 #eepi:36 #efie:73
#efor:-50 #egat:205 #egla:-57 #eglo:55 #ehic:-32 #eite:74 #eith:55 #ejal:68 #ejar:42 #ejel:152 #ejen:36 #ejor:105
#ejos:70 #elli:50 #ello:32 #else:95 #elvo:32 #eman:-33 #emas:51 #emin:75 #emos:-54 #empo:-30 #empr:130 #ench:50
#ende:-92 #endo:-49 #enen:49 #enes:-38 #engo:47 #enin:33 #enlo:46 #enou:26 #ensa:-33 #ensi:77 #ente:-81 #enti:-37
#ento:-117 #entr:-59 #eocu:52 #eone:56 #eopl:-45 #ephe:28 #epin:36 #epla:-36 #eras:-37 #erdo:-35 #ered:25 #eren:-37
#eres:62 #erfe:-35 #eria:-46 #erin:-25 #erio:-31 #eron:-25 #erra:43 #erro:30 #erse:-43 #erso:-63 #erta:49 #ervi:33
#esar:60 #esas:86 #escr:-80 #esit:-47 #esnt:116 #esos:68 #esse:-38 #este:-112 #esto:57 #even:48 #ever:68 #eves:54
#ewhe:110 #exac:-40 #exis:-31 #expe:78 #exte:-80 #exti:40 #exto:-31 #exts:-44 #ezca:26 #falt:-58 #favo:32 #fect:-38
#feel:-28 #feri:-81 #fert:29 #fier:74 #filt:70 #fine:164 #firm:-43 #firs:-89 #fixe:-84 #flus:72 #fore:-39 #forg:50
#fort:25 #foun:92 #fren:-99 #frid:47 #fter:48 #full:50 #gain:29 #gall:39 #galo:31 #gara:67 #garr:-65 #gast:43
#gati:205 #gaug:-44 #gave:50 #gend:-46 #ghts:-25 #givi:31 #glar:-50 #gnme:38 #goin:56 #good:84 #grac:-42 #grad:32
#gran:-29 #gual:-43 #guan:-41 #guna:125 #guno:116 #habl:-54 #hace:-35 #haga:67 #hago:72 #hanc:123 #hand:31 #hank:34
#hard:110 #harg:-41 #have:39 #heap:61 #heat:-57 #hedu:-29 #hera:33 #here:-45 #hich:-43 #hicl:-30 #hijo:38 #hile:-55
#hing:63 #hink:-70 #hist:42 #hizo:-29 #hoqu:-44 #hori:-106 #horr:31 #hose:91 #houg:88 #hour:34 #hout:38 #hree:88
#hrou:-42 #humb:114 #hurc:30 #iaja:-31 #iate:33 #iban:-64 #ibir:-124 #ible:44 #ices:76 #icey:42 #icle:-30 #idad:26
#iday:43 #idea:-103 #ided:96 #iden:-34 #iend:-75 #ient:-43 #iern:28 #ierr:42 #igan:73 #ignm:38 #igua:-43 #ilte:51
#imer:-41 #imon:-28 #impo:78 #inde:60 #ingu:161 #inki:32 #inst:38 #inte:37 #intm:48 #into:76 #invi:34 #ione:-35
#iosi:58 #iper:87 #ires:39 #irma:-41 #irst:-89 #irve:61 #ises:35 #ismo:53 #isnt:35 #iste:31 #itar:26 #ithe:52
#itho:44 #ixed:-86 #jaja:72 #jalo:66 #jaro:67 #jelo:152 #jenl:39 #juev:54 #just:71 #keep:108 #know:-89 #lace:-42
#laro:-72 #ldnt:-31 #leas:49 #leav:181 #leep:33 #lejo:59 #lema:-49 #less:56 #lest:-32 #lets:47 #leve:-48 #levo:70
#lgui:26 #lien:-68 #lier:-47 #ligh:-36 #lign:38 #like:36 #lind:-39 #ling:33 #list:25 #live:49 #lked:45 #llam:-25
#llan:61 #lleg:-48 #ller:-51 #llin:57 #llos:26 #loca:34 #loco:159 #long:-161 #lood:31 #look:-47 #lqui:-34 #lrig:25
#lsew:59 #ltas:29 #lter:32 #lune:-30 #lush:72 #lvid:59 #mabl:-59 #mail:25 #mand:55 #mane:-69 #mano:39 #many:-36
#marc:-155 #mari:-34 #masi:27 #mati:-48 #matt:-41 #mber:-56 #mbre:68 #mbsu:-43 #meca:48 #mejo:105 #ment:-80 #meon:56
#mero:-112 #mess:-31 #mewh:52 #migo:30 #mind:78 #ming:28 #mism:45 #moda:28 #mole:-32 #mome:-153 #mont:-31 #more:-268
#morn:-60 #moto:-27 #mpan:39 #mpos:72 #mpra:92 #much:-90 #muer:41 #myse:99 #nada:54 #nage:32 #name:-132 #nana:38
#ncel:-27 #nces:96 #nche:36 #ndan:95 #nday:28 #ndem:-44 #nder:47 #ndin:95 #ndso:-29 #nece:63 #need:-62 #nega:199
#neit:209 #neja:-26 #nejo:-39 #nero:-33 #nesd:26 #nger:-90 #nges:41 #ngin:-31 #ngun:161 #nice:124 #nico:45 #ning:185
#nles:50 #nlos:43 #nmen:38 #nmig:32 #noma:81 #nomb:116 #none:328 #noth:38 #noug:26 #nozc:-135 #nque:25 #nsar:-33
#nswe:53 #ntac:-37 #ntas:59 #nter:42 #ntes:-64 #ntie:-25 #ntme:48 #ntra:-63 #numb:-40 #nume:-66 #nvie:68 #nymo:-49
#nywa:135 #ober:-54 #oble:-96 #obra:34 #obvi:-25 #ocid:42 #octo:-26 #ocup:102 #odav:-41 #oday:-57 #odos:42 #oesn:116
#ofer:28 #oice:-30 #oing:144 #oint:74 #oles:-50 #olvi:52 #omas:90 #ombe:45 #ombr:78 #omen:-154 #omeo:56 #omer:-51
#omew:52 #omin:32 #omod:28 #ompa:59 #onda:35 #ones:72 #onfi:-26 #onge:-105 #only:136 #onmi:32 #onoc:69 #onoz:-135
#onta:-44 #onth:-30 #onvi:49 #ooki:-34 #ools:25 #ople:-46 #opti:-46 #oque:-45 #oras:45 #orge:53 #orit:-114 #orks:-45
#orni:-53 #orre:-41 #orri:-122 #orry:101 #orta:26 #orth:204 #osib:60 #osid:41 #othe:60 #othi:59 #otro:30 #ough:25
#ould:-31 #ound:97 #ount:44 #ousa:-25 #owne:-66 #ozco:-135 #para:69 #park:-30 #part:-42 #pasa:-34 #pass:220 #pena:100
#pend:64 #peni:32 #pens:51 #peop:-45 #perd:-36 #perf:-35 #pero:159 #plac:-38 #plea:-33 #poin:76 #poke:37 #posi:59
#pped:-40 #ppen:33 #ppoi:45 #ppre:33 #pran:102 #pref:59 #pren:-63 #preo:52 #pres:-73 #pric:59 #prim:-38 #prob:-114
#ptio:-41 #pues:-47 #putt:81 #quea:86 #qued:29 #quem:-26 #quie:-108 #quit:80 #raci:-40 #rage:59 #raig:-72 #rake:-38
#ranc:-48 #rand:-49 #rano:71 #ratc:43 #rath:48 #rato:38 #rcac:29 #rcan:-53 #rcha:-62 #rdar:34 #rday:31 #rdly:32
#reca:104 #reci:-101 #reco:40 #rect:-46 #refi:73 #rely:47 #remi:66 #remo:-27 #renc:34 #rend:-63 #reno:-68 #reoc:52
#repl:-57 #resa:-67 #ress:-31 #rest:58 #rfec:-35 #rget:53 #riba:-65 #rice:53 #rich:33 #rida:42 #ries:-130 #righ:105
#rime:-42 #ring:-72 #rios:70 #rita:-103 #rito:36 #rlie:-49 #rmat:-36 #rnin:-49 #road:-28 #robl:-118 #rong:-44
#ropi:25 #roug:-60 #roun:41 #rque:-42 #rrec:-44 #rrie:-142 #rson:-63 #rtan:27 #rtes:-25 #ruck:-28 #ruid:-44 #runs:30
#rven:49 #saba:-29 #sabe:28 #sada:29 #sale:-29 #sali:-61 #sari:54 #sary:45 #satu:37 #says:49 #sche:-29 #scri:-82
#seas:-35 #seco:-39 #self:104 #sell:62 #sema:-33 #serv:29 #sewh:59 #ship:34 #shop:-76 #sibl:55 #sida:49 #siem:44
#sien:39 #siga:90 #sign:-44 #sima:-31 #sirv:54 #sito:-48 #sits:30 #sive:82 #sked:-28 #skip:110 #slee:33 #sold:-133
#solo:100 #some:70 #sona:-45 #soon:41 #sorr:94 #soun:-35 #spen:82 #spok:45 #sque:83 #ssag:-27 #ssar:36 #ssed:-87
#stam:115 #stan:-35 #sted:-27 #sten:-26 #stil:-38 #stom:-48 #stop:-83 #stoy:129 #stri:28 #stuf:88 #supe:-30 #suyo:-36
#swap:-26 #swer:53 #take:26 #tall:-68 #tamo:128 #tand:-65 #tard:40 #tarl:29 #taro:29 #teac:26 #tede:-45 #tell:-49
#temp:82 #teng:48 #tere:56 #text:-138 #ther:44 #thos:80 #thou:107 #thre:82 #thro:-45 #thum:113 #tiem:-28 #tien:-54
#tier:43 #till:-52 #time:48 #ting:106 #tion:-68 #tira:-31 #tire:70 #tive:109 #tivo:55 #tmen:48 #tobe:-31 #toda:-87
#tome:-46 #took:-43 #town:-46 #trai:-59 #tran:-37 #tres:32 #truc:-28 #tter:-82 #ttin:79 #tual:48 #tues:-60 #tuff:88
#turd:37 #turn:-40 #uall:40 #ualq:-34 #ucha:-33 #ueak:94 #ueda:79 #uedo:-38 #uena:-27 #uere:55 #uesd:-38 #ueve:51
#uier:-86 #uldn:-31 #umbe:-41 #umbs:114 #umer:-66 #unch:-27 #unds:-31 #unes:-30 #unle:50 #unqu:25 #uper:-30 #uras:26
#urch:29 #urda:37 #urio:79 #usan:-25 #usca:-25 #usta:43 #uste:-52 #usto:-87 #utti:77 #vale:63 #vehi:-32 #vemo:-35
#vend:-31 #vera:-46 #vers:-33 #very:39 #viaj:-47 #vide:45 #vido:38 #vien:44 #vier:63 #ving:27 #visi:-31 #vive:-62
#vuel:30 #wapp:-33 #wedn:26 #week:-72 #were:218 #weve:34 #what:28 #when:74 #wher:120 #whic:-43 #whil:-55 #will:32
#wipe:91 #wner:-56 #wont:83 #worr:-132 #wort:199 #wren:50 #wron:-44 #xact:-40 #xist:-31 #xtee:-68 #xtin:55 #xtos:-38
#year:52 #ying:42 #ymor:-49 #your:49 #ysel:99 #yway:135 #zero:105 %again_later:-165 %again_later%agree:-70
%again_later%away:-97 %again_later%bad:37 %again_later%bring:-69 %again_later%busy:-54 %again_later%call_off:36
%again_later%car:48 %again_later%do_it:-34 %again_later%doubt:48 %again_later%family:47 %again_later%message:-29
%again_later%money:-98 %again_later%noise:-25 %again_later%odometer:26 %again_later%on_way:147
%again_later%opening:35 %again_later%pay_day:-58 %again_later%phone:51 %again_later%place:-34 %again_later%refuse:40
%again_later%season:-26 %again_later%shift_it:31 %again_later%start_again:51 %again_later%thanks:41
%again_later%wrong_one:110 %agree:-97 %agree%away:57 %agree%bad:-29 %agree%bring:-178 %agree%busy:-26
%agree%call_off:88 %agree%car:105 %agree%car_part:267 %agree%doubt:-63 %agree%fails:-35 %agree%how_long:-84
%agree%lift:-51 %agree%meaning:52 %agree%message:61 %agree%money:-60 %agree%odometer:49 %agree%on_way:-27
%agree%place:76 %agree%question:263 %agree%refuse:-130 %agree%shift_it:-54 %agree%staff:29 %agree%start_again:-29
%agree%thanks:143 %agree%who:71 %agree%wrong_one:110 %away%bring:-44 %away%busy:-33 %away%call_off:31
%away%car_part:-30 %away%do_it:95 %away%doubt:-60 %away%elsewhere:-38 %away%how_long:-33 %away%leave_me:-26
%away%lift:-41 %away%money:44 %away%noise:38 %away%on_way:-64 %away%phone:-27 %away%refuse:171 %away%staff:36
%away%thanks:57 %away%wrong_one:27 %bad%call_off:87 %bad%car_part:52 %bad%doubt:58 %bad%question:50 %bad%refuse:80
%bad%shift_it:28 %bring:27 %bring%busy:-36 %bring%call_off:-92 %bring%car_part:71 %bring%doubt:-67
%bring%elsewhere:62 %bring%gone_car:39 %bring%leak:48 %bring%leave_me:-46 %bring%message:88 %bring%odometer:-25
%bring%on_way:-36 %bring%question:38 %bring%refuse:52 %bring%shift_it:-43 %bring%who:28 %bring%wrong_one:42 %busy:49
%busy%do_it:-25 %busy%fails:29 %busy%how_long:36 %busy%question:-28 %busy%staff:-35 %busy%wrong_one:47
%call_off%car_part:60 %call_off%doubt:66 %call_off%elsewhere:-34 %call_off%fails:-127 %call_off%family:54
%call_off%gone_car:37 %call_off%how_long:67 %call_off%leave_me:45 %call_off%lift:45 %call_off%meaning:33
%call_off%message:-47 %call_off%on_way:55 %call_off%opening:87 %call_off%question:165 %call_off%refuse:-84
%call_off%season:-32 %call_off%staff:41 %call_off%start_again:72 %call_off%thanks:596 %call_off%who:-25
%call_off%wrong_one:157 %car%gone_car:-123 %car%refuse:-164 %car%season:30 %car%start_again:27 %car%thanks:40
%car%wrong_one:-98 %car_part:-109 %car_part%doubt:-38 %car_part%elsewhere:-48 %car_part%fails:-79
%car_part%gone_car:-32 %car_part%how_long:-50 %car_part%leak:-39 %car_part%leave_me:210 %car_part%meaning:-52
%car_part%message:307 %car_part%money:-66 %car_part%on_way:-44 %car_part%place:-64 %car_part%refuse:132
%car_part%shift_it:61 %car_part%smoke_smell:-69 %car_part%start_again:54 %car_part%thanks:71 %car_part%wrong_one:79
%do_it%elsewhere:-137 %do_it%fails:34 %do_it%family:-147 %do_it%gone_car:-56 %do_it%leave_me:59 %do_it%message:33
%do_it%odometer:-26 %do_it%staff:-84 %do_it%start_again:46 %do_it%thanks:62 %doubt%money:43 %doubt%on_way:-58
%doubt%question:161 %doubt%refuse:163 %doubt%staff:-28 %doubt%start_again:36 %doubt%thanks:41 %doubt%wrong_one:78
%elsewhere:104 %elsewhere%family:73 %elsewhere%gone_car:36 %elsewhere%money:-53 %elsewhere%odometer:66
%elsewhere%place:-47 %elsewhere%question:-45 %elsewhere%shift_it:29 %elsewhere%thanks:45 %elsewhere%who:29
%fails:-115 %fails%on_way:36 %fails%place:-31 %fails%refuse:-27 %fails%shift_it:43 %family%money:32 %family%noise:-26
%family%odometer:49 %family%place:25 %family%question:44 %family%refuse:77 %family%staff:114 %family%start_again:29
%family%thanks:33 %family%who:-32 %gone_car:-137 %gone_car%how_long:-26 %gone_car%odometer:77 %gone_car%on_way:53
%gone_car%question:126 %gone_car%refuse:61 %gone_car%thanks:94 %gone_car%who:121 %gone_car%wrong_one:82
%how_long%on_way:27 %how_long%opening:48 %how_long%refuse:56 %leak%staff:26 %leave_me%message:67 %leave_me%money:-43
%leave_me%question:-26 %leave_me%refuse:68 %leave_me%shift_it:41 %leave_me%start_again:-53 %leave_me%wrong_one:78
%lift:-36 %machine:-50 %meaning:-41 %meaning%phone:-28 %meaning%question:-31 %message:-27 %message%question:-40
%message%refuse:-205 %message%start_again:-126 %message%wrong_one:-81 %money:41 %money%on_way:72 %money%pay_day:-28
%money%refuse:173 %money%shift_it:-38 %money%staff:44 %money%start_again:-34 %money%thanks:30 %money%wrong_one:65
%noise:-84 %noise%odometer:-36 %noise%question:-41 %noise%refuse:-45 %noise%thanks:27 %odometer:63
%odometer%question:50 %odometer%refuse:49 %odometer%season:25 %odometer%staff:66 %odometer%thanks:37 %on_way%phone:29
%on_way%place:-62 %on_way%refuse:128 %on_way%shift_it:51 %on_way%start_again:69 %on_way%thanks:-32
%on_way%wrong_one:44 %opening:-30 %opening%question:33 %opening%refuse:87 %pay_day:-90 %pay_day%refuse:-46
%pay_day%season:-54 %pay_day%thanks:26 %phone:-149 %phone%shift_it:-48 %phone%staff:-40 %phone%who:31
%phone%wrong_one:-27 %place%refuse:43 %question:-174 %question%staff:67 %question%start_again:40 %question%thanks:150
%question%who:76 %question%wrong_one:70 %refuse:500 %refuse%season:-54 %refuse%shift_it:-30 %refuse%thanks:38
%refuse%who:-59 %refuse%wrong_one:-98 %season:-84 %shift_it:79 %shift_it%start_again:59 %shift_it%thanks:45
%smoke_smell:-63 %staff:58 %staff%who:31 %staff%wrong_one:59 %start_again:-47 %start_again%wrong_one:91
%thanks%who:48 %thanks%wrong_one:73 %who%wrong_one:26 %wrong_one:-100 @?:-127 @after_visit:-613 @car:-82
@confirm:-690 @confirm_stop:170 @later:-233 @nothing:-348 @odometer:-73 @offers:132 @offers_:-70 @reading:-62
@times:-333 @walk_in:58 ^_$:-94 ^_a:101 ^_abren:-29 ^_actually:30 ^_ahora:-61 ^_ahorita:-47 ^_all:-32 ^_any:-115
^_anything:29 ^_appreciate:63 ^_aqui:-118 ^_are:-27 ^_as:173 ^_asi:238 ^_both:-83 ^_call:-31 ^_can:-79 ^_cant:140
^_como:-212 ^_correct:-32 ^_cost:-29 ^_count:57 ^_cualquiera:-25 ^_cuanto:-44 ^_dale:-28 ^_de:-79 ^_dejelo:38
^_did:-45 ^_do:-171 ^_does:-33 ^_dont:70 ^_early:-26 ^_either:-188 ^_estoy:27 ^_fine:-36 ^_first:-36 ^_forget:28
^_found:68 ^_go:-32 ^_going:128 ^_good:-47 ^_gracias:-221 ^_had:-34 ^_hard:64 ^_how:-84 ^_id:64 ^_if:-27 ^_ill:39
^_im:61 ^_imposible:33 ^_is:-127 ^_it:-101 ^_just:-29 ^_la:-105 ^_last:-54 ^_leave:98 ^_let:-30 ^_lets:53 ^_lo:-87
^_los:-26 ^_me:-216 ^_mejor:148 ^_mi:32 ^_mil:-55 ^_muchas:-34 ^_muy:184 ^_my:-51 ^_nada:27 ^_nah:52 ^_nd:-37
^_need:-46 ^_negative:123 ^_negativo:82 ^_neither:216 ^_nel:185 ^_never:39 ^_ni:302 ^_nice:183 ^_ninguna:119
^_ninguno:92 ^_no:289 ^_nombre:98 ^_none:181 ^_nop:75 ^_not:130 ^_nothing:111 ^_ok:-182 ^_on:25 ^_only:88
^_option:-32 ^_para:147 ^_paso:64 ^_pass:74 ^_por:-179 ^_prefiero:62 ^_puedo:-61 ^_pues:-26 ^_put:-35 ^_quiero:-25
^_quit:42 ^_scratch:25 ^_se:-76 ^_si:-272 ^_simon:-28 ^_skip:54 ^_solo:38 ^_someone:-35 ^_st:-36 ^_sure:93
^_tengo:110 ^_thanks:-272 ^_that:126 ^_the:-43 ^_there:-80 ^_those:-34 ^_thumbsup:-43 ^_thursday:60 ^_todavia:-59
^_too:232 ^_we:170 ^_were:214 ^_what:-176 ^_who:-25 ^_why:-86 ^_will:-74 ^_wont:43 ^_works:-53 ^_y:-74 ^_ya:-107
^_yeah:150 ^_yep:-68 ^_yes:-164 ^_yo:98 ^_you:-78 ^_your:-75 ^_zero:55 a:90 a__carro:25 a__hora:55 a__horas:37
a__nada:33 a__no:25 a__que:40 a__time:-62 a_car:-31 a_customer:-31 a_esa:72 a_esas:39 a_fee:-27 a_good:-84 a_guy:131
a_hacer:76 a_la:-49 a_las:-31 a_los:32 a_mechanic:37 a_no:38 a_otro:26 a_ser:28 about:79 about__tires:58
about_it:-112 about_oil:41 about_the:71 accident:-25 aceite:74 aceite_$:67 acomoda:29 actually:40 after:59
after_all:33 after_the:31 again:-27 again_$:-47 against:55 agarra:-43 agarran:-25 agendeme:-44 agendeme_$:-44
aguanta:-32 aguanta_$:-27 ahi_$:81 ahi_nos:-32 ahi_paso:-41 ahi_voy:-41 ahora:-101 ahora_$:-63 ahora_no:-96
ahorita:-100 ahorita_$:-52 ahorita_no:-67 aint:45 al:50 alguien:26 alguien_que:32 alignment:40 all:192 all_$:-28
all__for:27 all__them:-34 all_day:-53 all_good:32 all_set:211 all_that:56 already_$:-35 already_did:-37
already_got:26 already_had:41 alright:31 also:53 am:-48 am_$:-29 amable:-28 amable_$:-29 amables:-31 amor:25 an:42
an__change:-26 an_appointment:76 an_oil:-26 and:101 and__i:28 and__is:41 and_did:-29 and_not:29 answer:43 antes:-53
antes_de:-26 any:-102 any__them:30 any__those:-64 any_day:-27 anymore:-49 anymore_$:-36 anything_but:37
anything_else:-39 anyway:136 anyway_$:128 apenas:29 appointment:50 appreciate:36 appreciate_the:25 aqui:-210
aqui_$:-83 aqui__es:-26 aqui__hay:-45 aqui__vive:-61 aqui_no:-133 are:-43 are_$:-29 are_fine:-39 arreglaron:-67
arreglo:55 arreglo_mi:-26 as:203 asi:453 asi_$:59 asi__bien:90 asi__no:32 asi_es:-32 ask:-32 asked:-28 at:-92
at_$:-33 at__time:26 at_all:-43 at_the:-48 aunque:25 away:33 ayer:-47 back:28 back_$:-36 back_to:-25 barely:40 be:78
be_$:66 be__that:49 be__there:51 be_back:72 be_doing:39 be_needing:27 be_there:-27 beater:41 been:-54 beer:32
before:-50 bien:128 bien_asi:56 bien_gracias:74 bien_no:54 bill:-31 blood:33 book:-41 book_it:-35 both:-116
both_are:-34 bother:70 bought:-26 brakes:-26 bring:-40 buen:-43 busy:-52 but:270 but__much:28 but__you:34 but_do:26
but_how:27 but_i:40 but_ill:35 but_monday:-30 but_no:79 but_the:-30 but_what:34 by:-77 by__name:-38 by_that:-38
cabin:32 cabin_filter:27 caen:25 call:-58 call_me:-54 cambio:51 cambio__aceite:49 cambio_el:64 cambios:-51 came:-28
can__it:34 can_i:-30 cant:134 cant__that:25 cant_do:200 cant_make:31 cant_say:-77 cant_swing:37 car_$:-45 car_is:108
caro:254 caro_$:140 carro_$:-28 carro_tengo:-27 cars:37 casa:74 casa_$:72 caso:102 caso_$:98 chances:98 chances_$:98
change_$:-27 changed__mind:46 changed_my:42 changes:43 changes_$:72 charge:-32 charged:-25 cheaper:50 chiste:38
choque:-44 church:30 cita:58 cita_el:26 cliente:-52 cochera:34 cochera_$:34 coming:43 como:-174 como_esta:41
como_no:-217 como_si:25 con:86 con__mecanico:-41 con__que:32 con_mi:-29 con_un:72 conmigo:32 conmigo_$:28
conozco:-135 conozco_$:-78 conviene:49 conviene_$:49 correct:-37 cost:-55 cost_$:-27 count:56 count__out:61
count_me:56 covered_$:29 creo:63 cualquiera:-26 cuanto:30 cuanto_es:28 curiosidad:41 customer:-46 da:-90 dale:-28
day__me:61 day_for:59 days:51 de:47 de__dos:29 de__llantas:81 de__me:53 de__no:-73 de__que:50 de__taller:-37
de__ya:35 de_aceite:27 de_aqui:-36 de_eso:35 de_freno:-35 de_la:36 de_las:69 de_los:62 de_noche:29 de_que:-40
de_veras:-35 dealer:65 decided:96 decided_against:46 dejalo:68 dejaron:52 dejelo:152 dejelo_asi:58 dejenlos:33
dejo:94 dejo_$:85 despues:-25 di:-32 dia_$:32 did:-167 did_it:-58 did_that:-36 did_the:-54 diga:-27 dije:29
dije_que:27 dime:69 dinero_$:-36 do:84 do_$:-105 do__instead:-33 do__need:-57 do__of:86 do__own:143 do_any:48
do_friday:32 do_i:-90 do_it:-35 do_my:143 do_not:-48 do_the:35 do_thursday:52 does_all:29 does_it:-38 doesnt:116
doesnt_matter:-37 doesnt_work:129 dogs:28 doing:88 doing_it:30 doing_that:38 done:-32 dont:69 dont__a:-34
dont__any:-35 dont__it:113 dont__me:-85 dont__the:42 dont__you:-48 dont__your:92 dont_drive:-37 dont_have:-106
dont_know:-87 dont_need:71 dont_own:-39 dont_see:-33 dont_stop:67 dont_text:-70 dont_think:114 dont_want:130
dos_me:35 down:-125 down_$:-81 drive_$:-43 drive_it:25 dude:-75 earlier:-47 early:79 early_$:82 early_for:31
either:-149 either_$:-59 el__es:31 el__lo:25 el__no:43 el_aceite:59 el_carro:31 el_dia:-29 el_freno:-28 el_jueves:72
el_momento:-31 el_otro:-29 el_trabajo:-25 el_viernes:61 else:42 else_$:45 elsewhere:59 elsewhere_$:54 en:47
en__casa:90 en__garage:28 en_el:45 en_eso:30 en_la:50 en_otro:-27 end:-47 enough:26 entiendo:-48 entran:-52 era:28
es:-81 es_$:-91 es__numero:-25 es_de:-41 es_mecanico:69 es_mi:-41 es_necesario:53 esa:75 esa__no:33 esa_hora:56
esa_persona:-28 esas:92 esas_horas:48 escriban:-61 escriban_$:-35 ese:29 ese_carro:44 ese_senor:-30 eso:120 eso_$:61
eso_de:25 esos:68 esta:-26 esta__caro:119 esta_bien:-78 esta_muy:42 estamos:118 este:-77 esto:-36 esto_$:-27
estoy:127 estoy_bien:193 even:50 ever:87 ever_$:81 every:25 ex:-25 existe:-31 extra:26 falta:-53 far:31 favor:34
favor_$:43 fee:-29 feria:-80 feria_$:-61 filter:51 fine:164 fine_$:81 fine__it:92 fine__me:-53 fine_with:-39
first:-89 first_$:-43 fix:80 fix_it:69 fixed:-84 fixed_it:-30 flat_out:25 flush:69 for:135 for__blood:33 for__me:-35
for_it:-93 for_me:233 for_my:31 for_nothing:-35 for_now:57 for_that:132 for_the:-53 for_this:34 forget:53
forget_about:-25 forget_it:88 found:92 free_$:-25 freno:-68 freno_$:-51 friday:41 friday_$:105 friday_instead:-33
full:34 galon:36 garage:59 garage_$:34 gas:-27 gauge:-44 gauge_is:-44 gave:50 gave_you:65 get:-52 go:-60 go__it:-35
go__the:55 go_for:-38 go_to:70 going:56 going__be:-29 going__have:41 going_on:-33 going_to:98 good:85 good_$:112
good_for:-63 got:56 got__guy:132 got_a:153 got_it:-35 gracias:-40 gracias_$:-28 gracias__no:29 gracias__ya:44
gracias_pero:74 gracias_por:-39 gracias_ya:27 grandson:-29 gratis:28 gusta:35 gusto:-37 guy:119 guy_$:99 guy__it:-28
guys_$:-44 hablan:-28 hace:-104 hace_un:-26 hacer:54 hacer_nada:28 had:-28 had__done:32 haga:83 hago:72 hago_$:56
handled:-29 handles:39 happen:32 happy:-52 happy_with:-31 hard:78 hard_no:60 hard_pass:26 hardly:32 have:46
have__a:26 have__no:-41 have__say:38 have_an:68 have_it:-48 have_never:-29 have_no:-52 have_someone:69 hay:-83
hay_problema:-34 heat:-42 here:-56 hijo:39 him:-32 him_$:-27 hizo:-29 hora:44 horas:45 hot:-45 hours:31 how:35
how__is:59 how__was:33 how_about:-32 hoy:30 i:-41 i__a:56 i__asked:-26 i__be:46 i__do:33 i__got:36 i__have:-27
i__it:-39 i__know:-30 i__my:74 i__never:32 i__no:-55 i__on:25 i__own:-27 i__see:-29 i__that:-31 i__the:-40 i__to:-27
i__want:37 i_can:27 i_come:32 i_did:-25 i_do:79 i_dont:-96 i_get:-27 i_go:51 i_got:59 i_had:-31 i_have:52 i_like:40
i_meant:26 i_need:-135 i_never:-27 i_said:-46 i_want:-117 i_will:54 i_wont:35 id:94 id__not:48 id__talk:-46
id_rather:31 idea:-97 idea_$:-39 idea_who:-39 if:99 if__dont:-26 if_i:-65 igual_$:-40 ill:74 ill__a:-27 ill__it:114
ill__my:97 ill__there:-36 ill__you:-28 ill_be:-32 ill_need:-28 ill_pass:79 ill_take:80 im:187 im__a:-31 im__of:-29
im__the:-88 im__to:26 im_all:70 im_down:-74 im_fine:129 im_good:301 im_in:-26 im_not:-138 im_ready:-35 imposible:54
in__day:71 in_law:34 in_october:-28 in_the:94 instead_$:-28 interesa:-68 interesa_$:-100 interest:37 interested_$:-45
into:76 is_$:70 is__a:-83 is__bill:-28 is__early:68 is__going:-65 is__how:77 is__no:44 is_a:90 is_alright:35
is_fine:104 is_full:30 is_good:-79 is_it:-34 is_my:29 is_not:-91 is_ok:34 is_out:25 is_that:-66 is_there:-52
is_too:133 isnt:35 it:81 it_$:-50 it__a:34 it__at:-25 it__dont:30 it__fine:78 it__me:-54 it__more:-40 it__this:59
it__to:-110 it_be:36 it_but:63 it_done:37 it_for:-49 it_going:-36 it_in:-25 it_is:110 it_myself:74 it_on:39
it_take:-31 it_wont:-51 jaja:42 jaja_$:50 jueves:54 just:78 just_had:-27 keep:110 keep_me:42 keep_texting:33
keep_them:30 know:-102 know_$:-25 know_you:-49 la:84 la__de:-37 la__no:-41 la__pasada:25 la__vez:28 la_casa:79
la_cochera:34 la_luz:-38 la_pena:61 la_vez:28 las:32 las_$:-50 las__el:30 las_llantas:57 late:52 late__me:31
late__the:61 late_in:61 later:-37 law:32 le:67 le__a:27 le__el:53 le_cambio:64 le_falta:-56 le_toca:25 le_voy:46
lease:39 leave:164 leave__alone:-38 leave__the:30 leave_it:153 leave_me:-66 lejos:59 let_it:43 let_me:-63 lets:47
like:40 like_a:34 linda:-31 live:49 llantas:63 llantas_$:50 lleva_millas:28 lleve:-49 lleve_con:-39 llevo:70 lo:71
lo__con:43 lo__mi:-33 lo__y:-31 lo__ya:-36 lo__yo:90 lo_arreglo:62 lo_choque:-44 lo_hago:94 lo_hicieron:-25
lo_hizo:-32 lo_lleve:-47 lo_llevo:54 lo_necesito:-54 lo_que:26 lo_uso:37 lo_vendi:-31 lo_voy:41 loco:141 lol:58
lol_$:43 long:-38 longer:-103 longer__it:-53 longer__the:-36 longer_have:-44 longer_own:-38 looking:-36
looking_for:-25 los__me:42 los_cambios:-51 los_conozco:-61 los_dos:30 low:28 lunes:-30 luz:-42 luz_de:-37 make_it:-29
mal_$:-58 manana_$:-27 mandando:57 mandando_$:82 manden:-46 manden_mas:-25 manden_mensajes:41 manden_nada:-36
mandenme:38 manejo:-39 many:-36 marcha:-80 marcha_$:-74 mas:-141 mas_$:-125 matter:-39 me_$:-114 me__de:28 me__i:28
me__im:-26 me__la:68 me__mal:28 me__mas:-61 me__mensajes:33 me__nada:-109 me__the:32 me_about:175 me_acomoda:29
me_alone:-61 me_back:-26 me_but:29 me_conviene:41 me_dejaron:45 me_escriban:-33 me_gusto:-37 me_in:-50
me_interesa:-70 me_like:30 me_llame:30 me_lo:86 me_now:48 me_off:-37 me_on:25 me_out:53 me_queda:96 me_sale:-36
me_sirve:53 me_sirven:51 me_so:-27 me_stuff:32 mecanico:51 mecanico_$:63 mejor:108 mejor_lo:33 mejor_no:34
mensajes_$:-64 mero:-27 mes:-29 mi:44 mi__es:57 mi__le:30 mi__me:47 mi_amor:25 mi_hijo:39 mil:-51 mil_gracias:-37
miles_$:-26 mismo:54 momento:-134 momento_no:-77 monday:-47 mondays:70 money:26 more:-219 more_$:-127 more_of:-28
more_texts:-29 morning:-30 mornings:-30 moved:25 much_$:-26 muchas:-27 muchas_gracias:-27 muere:36 muy:302
muy__gracias:-30 muy__para:28 muy_amable:-28 muy_amables:-29 muy_caro:144 muy_lejos:41 muy_temprano:152 my:128
my__back:-28 my__do:-27 my__in:39 my__is:-29 my__no:37 my__oil:46 my__says:68 my_blood:33 my_car:-47 my_chances:98
my_grandson:-29 my_mind:51 my_money:-27 my_name:-27 my_number:38 my_own:196 my_wife:41 myself:99 myself_$:94 n:328
nada:62 nah:52 name:-66 nd:-43 nd_$:-33 necesario:63 necesario_$:47 necesito:-46 necesito_$:-36 necessary:36
necessary_$:36 need:-144 need_$:56 need_a:-61 need_that:-42 need_to:-125 needed:65 needed_$:99 needing:32
negative:123 negative_$:112 negativo:82 neither:209 neither_$:141 nel:185 nel_$:74 never__back:51 never_asked:-26
never_been:-26 never_mind:33 new:-45 ni:368 ni__tengo:-28 ni_carro:-27 ni_de:35 ni_el:45 ni_la:31 ni_lo:26
ni_loco:116 nice:134 nice__you:-25 nice_of:-25 ningun:-72 ninguna:125 ninguna_$:67 ninguno:109 ninguno__los:50
ninguno_de:54 no:129 no_$:398 no__ahora:-66 no__amor:25 no__and:-36 no__at:-66 no__bien:-68 no__cita:34
no__cliente:-41 no__conmigo:26 no__conozco:-90 no__de:-49 no__dont:51 no__el:-74 no__en:-31 no__esa:-26 no__ese:-35
no__good:52 no__gracias:31 no__gusto:-37 no__hace:25 no__hago:-46 no__have:-39 no__here:-117 no__i:56 no__interesa:94
no__is:220 no__it:29 no__last:26 no__like:26 no__los:-27 no__me:71 no__mensajes:-42 no__necesario:60 no__necesito:30
no__ningun:-78 no__ninguna:-25 no__otra:28 no__own:-38 no__pero:32 no__problema:-42 no__que:-47 no__quien:-33
no__recibir:-76 no__tengo:27 no__texts:-33 no__that:-63 no__the:91 no__them:38 no__voy:76 no__was:33 no__what:25
no__who:27 no__would:35 no__y:61 no__yet:-115 no__yo:-73 no__you:159 no_agarra:-42 no_and:162 no_but:103 no_car:-44
no_conozco:-38 no_creo:67 no_dont:32 no_entiendo:-33 no_es:-168 no_esta:-59 no_existe:-31 no_gracias:314 no_hay:-85
no_i:173 no_idea:-91 no_im:63 no_it:32 no_just:36 no_keep:57 no_le:41 no_lo:-31 no_longer:-108 no_los:-49
no_manden:-28 no_mas:-59 no_me:-107 no_mi:30 no_more:-224 no_my:58 no_necesito:28 no_need:85 no_nomas:30 no_not:-102
no_ocupo:81 no_on:36 no_one:-101 no_pero:76 no_point:35 no_prende:-29 no_problem:-76 no_puedo:79 no_pues:25
no_quiere:-32 no_se:-120 no_si:44 no_sirve:-38 no_soy:-277 no_tengo:-151 no_thank:95 no_thanks:218 no_that:59
no_tiene:-30 no_to:-43 no_traigo:-73 no_vive:-61 no_vuelvo:30 no_way:60 no_what:144 no_worries:-137 no_y:44 no_ya:109
noises:35 nomas:81 nombre:66 nombre_$:-26 none:212 none__them:42 none__those:55 none_of:119 nop:79 nop_$:66 nos:-33
nos_vemos:-30 not:-78 not_$:-29 not__at:39 not__but:-29 not__car:-48 not__customer:-43 not__in:33 not__it:95
not__me:36 not__month:-26 not__not:72 not__now:-78 not__the:81 not__this:-31 not__to:122 not__with:-50 not__yet:-43
not__you:-28 not_a:-80 not_at:62 not_coming:37 not_doing:39 not_ever:95 not_for:60 not_friday:27 not_going:72
not_happy:-56 not_him:-31 not_in:27 not_interested:111 not_me:-116 not_monday:64 not_my:-68 not_right:-100
not_sure:-43 not_the:-73 not_to:31 not_today:-52 not_worth:113 not_yet:-180 nothing:56 nothing_$:-42 now:-139
now_$:-202 now__me:-48 number:-38 numero:-66 nunca_$:36 o_no:-27 october:-31 october_$:-31 ocupo:52 ocupo_$:34 of:-54
of_those:37 of_town:-33 of_you:-30 off:-39 off_$:-86 off_my:38 oil:66 oil__the:25 oil_changes:45 oil_no:25 ok_$:139
ok_gracias:-36 old:32 on__now:-27 on__thought:43 on_in:-26 on_my:-53 on_second:43 on_that:77 on_this:74 one:-27
only:136 only__me:65 opcion_$:-32 opt:-27 option:-40 or:-72 or_anything:31 or_no:-54 otro:30 otro_$:-28 otro_dia:62
our:32 out_$:42 out__town:-32 out_of:-44 over_$:-41 over_here:84 over_the:-25 own:104 own_$:37 own_it:-37 own_oil:46
owner:-55 para:64 para__lo:-49 para__si:26 para_el:-34 para_nada:172 para_no:-25 parts:-25 pasa:-52 pasa__no:-43
pasa_si:-36 pass:269 pass_$:144 passed:-50 pay:-25 pena:72 people:-45 perdon:-28 perfect:-25 pero:154 pero__es:27
pero__no:-25 pero_no:40 pero_ya:27 persona:-48 please:-32 please_$:-35 point:31 por:-113 por__momento:-31
por__no:-165 por__que:26 por__y:34 por_ahora:-75 por_curiosidad:41 por_favor:45 por_que:-181 precio:-25 prefiero:73
prefiero_no:49 prende:-60 prende_$:-37 price:-60 prices:78 pricey:42 problem:-56 problem_$:-49 problema:-49
puedo_$:67 puedo__asi:-32 puedo_el:36 put:-82 put__in:-38 put_me:-29 putting:74 que:-61 que__eso:29 que__le:-25
que__llame:29 que__si:-34 que__ya:25 que_cobran:31 que_es:-36 que_lo:-43 que_me:27 que_no:-81 que_pasa:-38 que_si:39
que_va:135 queda:111 queda_$:83 queda__lejos:49 queda_muy:38 quedo:-39 quien:28 quien__lo:76 quien_es:-36 quien_me:66
quienes:-48 quienes_son:-43 quiero:-62 quiero__de:-29 quiero__nada:-56 quiero_cita:27 quiero_recibir:-81 quit:55
quit_sending:38 quiten:33 rather:48 rather__to:-46 rather_not:51 rather_talk:-54 ready:-43 ready_$:-40 recibir:-102
reminders:75 reminders_$:81 replaced:-46 rich:33 rich__my:33 rich_for:33 right:82 right_$:285 right_now:-164 road:-28
ruido:-26 runs:30 sabado:-28 saben:28 said_no:-37 sale:-38 sale_$:-27 salir:-30 saturday:30 saturday_$:41 say_no:-32
says:49 says_no:57 schedule:-27 scratch:28 scratch_that:26 se:-150 se__que:-38 se_me:29 se_quienes:-47 sea:-25
second:-38 second_$:-57 second_thought:43 see:-65 selling:53 semana:-27 send:-40 send_me:-44 sending:48 sending_me:34
set:234 set_$:181 set_for:57 she:31 shop:-80 shop_$:-32 shop_is:-25 si:-220 si_$:-62 si__interesa:-34 si__no:-110
si_como:-31 si_gracias:-39 si_me:31 si_no:-55 si_ya:-55 siempre:44 siempre_no:38 sigan:58 sigan_mandando:38 sigue:-26
simon:-28 sir:40 sir_$:40 sirven:53 sits:36 skip:114 skip_it:43 skip_the:38 so:205 so_$:29 so_im:43 so_much:-31
so_no:211 so_not:25 sold:-131 sold_it:-25 solo:100 someone:57 someone_$:35 somewhere:52 son:-68 son_$:-32 soon:34
sorry:94 sorry_$:97 sorry__is:-27 sounds:-27 sounds_good:-36 soy:-277 soy__persona:-49 soy_cliente:-42 soy_el:-38
soy_esa:-31 soy_la:-25 soy_yo:-71 spending:38 squeak:66 st:-39 st_$:-36 still:-39 stop:-82 stop_$:-111 stop__me:72
stop__the:75 stop_with:75 stuff:88 su:39 super:-29 sure:26 suyo:-36 swapped:-33 swing_it:36 take:35 take__back:26
take__chances:98 take__off:-51 take_it:46 take_me:-52 take_my:97 take_the:-30 taken:-25 taken__of:-25 taken_care:-25
talk:-58 talk_to:-45 talked:46 taller:-48 taller_$:-30 tarde:38 tell:-29 temprano:82 temprano_$:72 tengo:46
tengo__me:60 tengo_carro:-42 tengo_quien:60 tengo_un:37 text:-28 text__about:94 texting:55 texting_$:-31
texting_me:63 textos:-32 texts:-44 texts_$:-64 th:-63 th_$:-33 thank:90 thank_you:96 thanks:-53 thanks_$:-51
thanks__no:28 thanks__nothing:-35 thanks_but:86 thanks_for:-124 that__alright:35 that__me:28 that__to:-28
that__you:52 that_is:72 that_name:-38 that_old:32 that_one:35 that_wont:46 that_would:-31 the:64 the__but:31
the__for:174 the__is:72 the__of:-50 the__one:-25 the__so:26 the__stuff:56 the__went:38 the_car:83 the_day:63
the_dealer:60 the_earlier:-29 the_flush:60 the_garage:34 the_later:-26 the_oil:32 the_owner:-53 the_second:-31
the_th:-62 the_tire:66 the_tires:61 the_way:35 the_wiper:41 the_work:-42 them_$:41 then_$:33 there:-107
there__fee:-27 there__no:-55 there_a:-43 there_is:-73 these_$:-28 these_days:41 thing_$:36 think:-95 think__it:-115
think_about:-83 think_so:62 think_this:-26 thinking:26 thinking_of:27 this_$:25 this__not:-26 this_is:-67
this_month:-28 this_number:-29 this_one:61 this_time:80 this_week:-45 those:80 those_tires:-25 though:49 thought:40
thousand:-25 three:88 three_$:39 through:-42 thumbsup:-43 thumbsup_$:-43 thursday__work:73 thursday_at:-31 tiempo:-30
tiene:-42 tienen:46 til:-28 time:37 time_$:66 tire:29 tires:43 tires_$:27 to:-86 to__for:-28 to__in:28 to__it:83
to__me:-58 to__no:62 to_a:-28 to_be:-57 to_church:30 to_do:52 to_have:36 to_me:28 to_say:93 to_stop:-39 to_that:-67
to_the:77 to_your:-27 todavia:-41 todavia_no:-59 today:-57 today_$:-54 todos:29 too:359 too_$:-62 too__for:181
too_early:169 too_far:39 too_late:78 too_rich:33 took:-43 took__of:-28 took_care:-26 top:46 town:-43 town_$:-28
trabajando:28 traigo:-71 trip:-35 truck:-27 try:170 tuesday:-37 two:-43 uh:147 un:38 unless:50 unless__is:44
unless_it:44 up:-41 up_$:-47 up_in:30 up_the:30 use:34 use_the:36 uso:37 uso_$:30 ustedes:-45 ustedes_$:-99 va:161
va_$:100 va_a:25 vale:65 van:-34 ve:51 vehicle:-41 vemos:-35 vemos_$:-29 vendi:-51 veras:-35 vez:31 vez_me:34
vez_pasada:28 viernes:28 viernes_$:39 vive:-62 voy_$:-51 voy__hacer:68 voy_a:89 vueltas:29 vuelvo:32 want__texts:-39
want_it:91 want_your:-39 was_it:27 way:85 we:169 we__it:-27 we__the:44 we_dont:-40 we_have:96 we_sold:-53 we_will:137
wednesday:31 week:-67 week_$:-65 went_away:45 were:218 were_fine:43 were_good:29 weve:34 what:39 what__it:40
what__that:-26 what_was:28 wheel:-40 when:79 when_i:-31 while:-51 who:64 who__are:-42 who__this:43 who__you:59
who_is:33 who_you:-65 why:-87 why_not:-112 why_would:28 wife_says:45 will:32 will__be:52 will__it:28 will_do:-48
will_it:-35 wiper:40 wipers:54 wipers_$:49 with:-35 with_it:32 with_me:-35 with_the:36 without:44 wont:83
wont__over:-34 wont_be:127 wont_go:-39 wont_work:59 work:55 work__me:60 work_for:59 works:-45 works_$:-66
worries:-137 worth:199 worth_it:86 would_be:-34 would_it:29 wrong:-44 y:35 y_$:-26 y_como:28 y_que:27 y_ya:-41 ya:-97
ya__de:35 ya__existe:-31 ya__gracias:44 ya__hace:-52 ya__lleve:-42 ya__lo:-44 ya_le:-28 ya_lo:-62 ya_no:-60
ya_tengo:98 yeah_$:-194 yeah_no:30 year:42 year_$:28 yep:-69 yep_$:-27 yes:-227 yes_$:-103 yet:-247 yet_$:-197 yo:160
yo_$:-64 yo__la:81 yo__le:67 yo__manejo:-27 yo__soy:-68 yo_lo:182 yo_mismo:57 yo_ni:-57 yo_no:-129 you:-25 you_$:-72
you__i:-25 you__it:-62 you__what:30 you_are:-39 you_can:65 you_know:30 you_my:73 you_think:-55 you_to:-29 your:49
your__have:-31 your__is:-30 your_shop:-42 your_texts:-34 yours_$:-28 zero:105
"""
