"""What speaks for and against `decline`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "decline"
BIAS = -141
WEIGHTS = """\
#abad:-55 #abla:-42 #able:-47 #abou:82 #acci:-26 #aced:-42 #acei:60 #acer:40 #acha:28 #acia:-34 #acom:26 #actu:37
#adec:22 #ador:24 #afte:33 #agar:-56 #agen:-51 #agra:28 #agua:-32 #ahor:-193 #aigo:-74 #ains:41 #ajes:-31 #aken:-25
#akes:-22 #aler:73 #algu:43 #alir:-24 #alle:-50 #alls:110 #alqu:-32 #alri:22 #also:41 #alta:-32 #amab:-54 #amor:22
#amos:139 #anag:27 #anan:-37 #anca:-25 #ance:87 #anda:73 #ando:-35 #ands:-29 #anej:-60 #ange:31 #anic:60 #anks:-59
#anne:-26 #anot:-37 #answ:41 #ante:-33 #anym:-33 #anyw:115 #apen:22 #aper:39 #appo:40 #appr:22 #appy:-53 #aqui:-191
#arag:39 #arat:22 #arca:-35 #arch:-75 #arde:30 #ardl:30 #arge:-34 #aria:-32 #ario:46 #arli:-41 #arlo:38 #arly:70
#arou:23 #arra:-81 #asad:29 #aske:-23 #asse:-48 #aste:124 #athe:38 #atis:29 #ativ:152 #atte:-49 #atur:41 #auge:-35
#aunq:24 #avia:-40 #avor:26 #away:37 #ayar:22 #ayer:-35 #back:22 #bado:-55 #bara:22 #been:-43 #befo:-39 #bien:123
#bios:-46 #blan:-35 #blem:-106 #bles:-46 #book:-29 #both:-41 #bout:82 #brak:-32 #brin:-29 #bsup:-35 #buck:22
#buen:-48 #busy:-47 #call:37 #came:-25 #canc:-49 #cand:-49 #cani:47 #cant:117 #card:35 #caro:220 #cars:34 #casa:75
#caso:90 #catc:-22 #ccid:-24 #ceit:60 #cesa:52 #cesi:-29 #cess:34 #chan:162 #char:-41 #chas:-22 #chea:43 #chec:-32
#cher:25 #choq:-42 #chur:24 #cias:-38 #ciat:25 #cibi:-93 #cide:40 #cido:61 #cita:50 #clas:25 #clie:-43 #cobr:25
#coch:27 #comi:36 #como:-130 #comp:52 #cond:-35 #conf:-22 #conm:25 #cono:-50 #cons:22 #cont:-50 #conv:70 #cool:-23
#corr:-22 #cost:-66 #coup:-22 #cove:22 #cran:-28 #crat:38 #creo:50 #crib:-69 #ctob:-28 #ctua:43 #cual:-42 #cuan:-23
#cupe:65 #cupo:40 #curi:41 #cust:-43 #dale:-23 #dand:62 #dato:22 #davi:-33 #days:96 #ddle:-27 #deal:60 #deci:100
#deja:97 #deje:134 #dejo:91 #delo:60 #deme:-24 #denm:34 #dent:-40 #ders:73 #dese:22 #desp:-26 #dial:45 #diga:-24
#dime:61 #ding:122 #dled:-27 #dles:37 #does:81 #doin:56 #done:-32 #dont:43 #doub:-132 #down:44 #dson:-27 #dule:-26
#eady:-37 #eale:72 #eape:41 #earl:23 #eave:132 #ecal:95 #ecan:47 #eces:60 #ecib:-98 #ecid:82 #econ:-36 #ecto:-31
#eded:64 #edes:-46 #edin:31 #edul:-26 #eede:64 #eedi:31 #eepi:34 #efie:57 #efor:-39 #egat:181 #egla:-51 #eglo:59
#ehic:-29 #eite:60 #eith:62 #ejal:56 #ejar:29 #ejel:130 #ejen:25 #ejor:91 #ejos:59 #elli:43 #eloc:-24 #else:76
#elvo:22 #eman:-28 #emin:76 #emos:-40 #empo:-28 #empr:114 #ench:37 #ende:-91 #endo:-38 #enen:47 #enes:-23 #engo:32
#enin:32 #enlo:25 #enme:-24 #ensa:-39 #ensi:82 #ente:-68 #enti:-38 #ento:-98 #entr:-44 #eocu:56 #eone:51 #eopl:-30
#epin:34 #epla:-32 #eras:-33 #erdo:-37 #eren:-36 #eres:63 #erfe:-43 #eria:-52 #erra:25 #erse:-37 #erso:-55 #erta:45
#ervi:27 #esar:50 #esas:75 #escr:-70 #esit:-39 #esnt:106 #esos:58 #espe:22 #esse:-33 #este:-92 #esto:48 #even:28
#ever:49 #eves:41 #ewhe:102 #exac:-36 #exis:-30 #expe:79 #exte:-62 #exti:32 #exts:-49 #falt:-32 #favo:26 #fect:-46
#feel:-31 #fere:-28 #feri:-71 #fert:25 #fier:59 #fine:175 #firm:-42 #firs:-79 #fixe:-80 #folk:23 #fore:-30 #forg:45
#fort:23 #foun:91 #fren:-98 #frid:27 #fter:33 #full:44 #gall:28 #gara:38 #garr:-54 #gast:31 #gati:181 #gaug:-35
#gave:50 #gend:-42 #ging:-23 #glar:-42 #goin:70 #good:74 #grac:-38 #grad:28 #grat:23 #gual:-37 #guan:-30 #guie:23
#guna:115 #guno:106 #habl:-50 #hace:-36 #haga:52 #hago:53 #hanc:135 #hand:25 #hank:52 #hard:97 #harg:-35 #have:37
#heap:47 #heat:-45 #heck:-22 #hedu:-26 #hera:26 #here:-26 #hich:-32 #hicl:-27 #hijo:39 #hile:-45 #hing:56 #hink:-46
#hist:29 #hole:29 #hoqu:-42 #hori:-117 #horr:29 #hose:97 #houg:78 #hour:45 #hree:48 #hrou:-44 #humb:109 #hurc:24
#iaja:-28 #iate:25 #iban:-51 #ibir:-101 #ible:29 #ices:72 #icle:-27 #iday:24 #idea:-91 #ided:74 #iden:-27 #iend:-51
#ient:-22 #iern:24 #ierr:25 #igan:64 #igua:-38 #imer:-38 #impo:55 #inda:-33 #inde:55 #ingu:146 #inki:39 #insi:23
#inte:38 #intm:43 #into:57 #invi:31 #ione:-28 #iosi:32 #iper:71 #ires:22 #irma:-31 #irst:-79 #irve:30 #ises:36
#isim:-28 #ismo:30 #isnt:30 #ithe:62 #ixed:-80 #jaja:27 #jalo:54 #jaro:47 #jelo:130 #jenl:29 #juev:40 #just:71
#keep:81 #know:-68 #lace:-38 #laro:-62 #leav:135 #leep:27 #lejo:47 #lema:-44 #less:37 #lest:-23 #lets:25 #leve:-37
#levo:57 #lgui:26 #lien:-53 #lier:-39 #ligh:-22 #like:31 #lind:-40 #ling:26 #llam:-22 #llan:50 #lleg:-32 #ller:-42
#llin:50 #loci:-24 #loco:151 #long:-148 #lood:28 #look:-39 #lqui:-32 #lrig:22 #lsew:50 #ltas:27 #lter:-22 #lune:-27
#lvid:54 #mabl:-54 #mana:-38 #mand:26 #mane:-62 #mano:33 #many:-35 #marc:-129 #mari:-31 #mati:-33 #matt:-36 #mber:-50
#mbre:24 #mbsu:-35 #meca:47 #mejo:91 #mens:-33 #ment:-80 #meon:51 #mero:-90 #mess:-24 #mewh:52 #migo:33 #mind:82
#ming:26 #mism:23 #moda:26 #mole:-23 #mome:-132 #mond:26 #mone:29 #more:-235 #morn:-51 #mpan:36 #mpos:50 #mpra:75
#much:-75 #muer:40 #must:-23 #myse:95 #nada:38 #nage:27 #name:-116 #ncel:-49 #nces:115 #nche:23 #ndan:67 #ndem:-40
#nden:-23 #nder:53 #ndin:84 #ndso:-27 #nece:57 #need:-27 #nega:175 #neit:194 #neja:-23 #nejo:-35 #nero:-28 #ners:-22
#next:-22 #nger:-76 #nges:44 #ngin:-31 #ngun:146 #nice:118 #nico:44 #ning:171 #nles:37 #nlos:22 #nmig:25 #noma:63
#nomb:66 #none:257 #noth:37 #nozc:-116 #nsaj:-33 #nsar:-22 #nswe:41 #ntac:-26 #ntas:53 #nter:53 #ntes:-52 #ntie:-22
#ntme:43 #ntra:-51 #numb:-28 #nume:-57 #nvie:66 #nymo:-33 #nywa:117 #ober:-50 #oble:-102 #obra:43 #ocid:38 #octo:-23
#ocup:96 #odav:-33 #oday:-52 #odos:32 #oesn:106 #ofer:24 #oing:126 #oint:58 #oles:-36 #olks:23 #olvi:50 #omas:71
#ombr:32 #omen:-133 #omeo:51 #omer:-46 #omew:52 #omin:25 #omod:26 #ompa:53 #onda:38 #ones:34 #oney:29 #onfi:-28
#onge:-95 #only:96 #onmi:25 #onoc:66 #onoz:-116 #onta:-32 #onve:22 #onvi:48 #ooki:-23 #opin:22 #ople:-31 #opti:-38
#oque:-42 #oras:52 #orda:25 #orge:54 #orit:-123 #orks:-46 #orni:-51 #orre:-23 #orri:-109 #orry:89 #orta:25 #orte:-22
#orth:181 #osib:54 #othe:39 #othi:37 #oton:-23 #otro:26 #ould:-34 #ound:90 #owne:-56 #ozco:-116 #pany:22 #para:81
#part:-30 #pass:203 #pena:88 #pend:42 #peni:30 #pens:64 #peop:-30 #perd:-38 #perf:-43 #pero:138 #plac:-39 #plea:-34
#poin:60 #poke:35 #posi:53 #pped:-36 #ppen:33 #ppoi:40 #ppre:25 #pran:81 #pref:44 #pren:-46 #preo:56 #pres:-66
#pric:56 #prim:-63 #prob:-112 #ptio:-37 #pues:-49 #putt:66 #quea:72 #quie:-99 #quit:46 #raci:-37 #rack:22 #rage:39
#raig:-64 #rake:-32 #ranc:-39 #rand:-38 #rano:74 #ratc:38 #rath:43 #rati:24 #rato:40 #raya:22 #rcha:-52 #rdar:35
#rday:33 #rdly:30 #rdon:-29 #reca:94 #reci:-91 #reco:23 #rect:-26 #refi:57 #rely:25 #remi:68 #rend:-46 #reno:-68
#reoc:56 #repl:-54 #resa:-49 #ress:-27 #rest:28 #rfec:-43 #rget:54 #riba:-55 #rice:52 #rida:25 #ries:-115 #righ:92
#rime:-38 #ring:-51 #rios:38 #rita:-121 #rito:28 #rlie:-41 #rman:22 #rmat:-28 #rnin:-47 #road:-22 #robl:-118
#rong:-35 #ropi:24 #roug:-59 #roun:37 #rque:-26 #rrec:-25 #rrie:-127 #rsda:32 #rson:-55 #rtan:26 #ruck:-24 #ruid:-29
#runs:30 #saba:-55 #saje:-30 #sale:-29 #sali:-48 #sari:44 #sary:34 #satu:38 #says:54 #sche:-26 #scri:-70 #seas:-32
#seco:-35 #self:96 #sell:44 #sema:-28 #serv:24 #sewh:50 #shop:-66 #sibl:38 #sida:33 #siem:40 #sien:39 #siga:75
#sign:-39 #sima:-27 #simo:-27 #sirv:23 #sito:-40 #sked:-23 #skip:86 #slee:27 #sold:-113 #solo:92 #some:80 #sona:-35
#soon:30 #sorr:82 #soun:-35 #spen:54 #spok:35 #sque:69 #ssar:34 #ssed:-79 #stam:106 #stan:-28 #stay:24 #sted:-46
#stil:-35 #stom:-43 #stop:-50 #stoy:109 #stri:26 #stuf:48 #supe:-29 #swap:-22 #swer:41 #tact:-26 #take:47 #talk:-30
#tall:-52 #tamo:115 #tand:-58 #tard:38 #teac:24 #tede:-46 #tell:-44 #temp:72 #tend:-30 #teng:33 #tere:56 #text:-108
#than:41 #ther:35 #thos:85 #thou:80 #thre:43 #thro:-46 #thum:107 #tiem:-24 #tien:-53 #tier:28 #till:-38 #time:47
#ting:89 #tion:-62 #tira:-35 #tire:37 #tive:102 #tivo:46 #tmen:43 #tobe:-28 #toda:-69 #tome:-41 #tono:-23 #took:-32
#town:-35 #trai:-61 #tran:-32 #tres:32 #truc:-24 #tter:-62 #ttin:69 #tual:40 #tues:-37 #tuff:48 #turd:38 #turn:-42
#uall:33 #ualq:-32 #uand:-23 #ucha:-26 #ueak:75 #ueda:67 #uedo:-35 #uena:-22 #uera:22 #uere:54 #ueve:40 #uier:-85
#umbe:-29 #umbs:109 #umer:-57 #unch:-22 #unds:-29 #unes:-27 #unle:37 #uper:-30 #uras:26 #urch:24 #urda:38 #urio:40
#ursd:32 #usca:-22 #usta:36 #uste:-57 #usto:-77 #utti:66 #vale:53 #vehi:-29 #velo:-24 #vemo:-25 #vera:-42 #vers:-35
#viaj:-41 #vide:47 #vido:35 #vien:43 #vier:61 #ving:32 #visi:-22 #vive:-48 #want:-35 #wapp:-30 #week:-83 #were:165
#what:32 #when:65 #wher:121 #whic:-32 #whil:-45 #whol:35 #wife:26 #will:23 #wipe:74 #with:-23 #wner:-48 #wont:65
#work:25 #worr:-117 #wort:175 #wren:37 #wron:-35 #xact:-36 #xist:-30 #xtee:-59 #xtin:48 #xtos:-22 #yaro:22 #year:42
#ying:38 #ymor:-33 #your:39 #ysel:95 #yway:117 #zero:67 %again_later:-143 %again_later%agree:-41
%again_later%away:-58 %again_later%bad:33 %again_later%bring:-37 %again_later%busy:-44 %again_later%car:55
%again_later%do_it:-23 %again_later%doubt:42 %again_later%family:34 %again_later%money:-64 %again_later%on_way:138
%again_later%opening:33 %again_later%pay_day:-45 %again_later%phone:32 %again_later%place:-29 %again_later%staff:30
%again_later%start_again:27 %again_later%thanks:25 %again_later%wrong_one:88 %agree:-103 %agree%away:44
%agree%bad:-22 %agree%bring:-143 %agree%call_off:71 %agree%car:125 %agree%car_part:242 %agree%doubt:-62
%agree%fails:-36 %agree%how_long:-62 %agree%leave_me:-42 %agree%lift:-38 %agree%money:-53 %agree%odometer:28
%agree%place:58 %agree%question:203 %agree%refuse:-78 %agree%shift_it:-27 %agree%staff:34 %agree%thanks:136
%agree%wrong_one:74 %away%bring:-28 %away%busy:-22 %away%do_it:105 %away%doubt:-49 %away%elsewhere:-30 %away%fails:28
%away%how_long:-24 %away%leave_me:-26 %away%lift:-30 %away%money:30 %away%noise:53 %away%on_way:-51 %away%phone:-22
%away%place:28 %away%refuse:163 %away%staff:35 %away%thanks:53 %away%wrong_one:30 %bad%call_off:70 %bad%car_part:51
%bad%doubt:52 %bad%message:22 %bad%question:44 %bad%refuse:48 %bad%shift_it:25 %bad%staff:-34 %bad%start_again:24
%bad%wrong_one:24 %bring:26 %bring%busy:-29 %bring%call_off:-78 %bring%car_part:70 %bring%doubt:-52
%bring%elsewhere:64 %bring%gone_car:30 %bring%how_long:22 %bring%leak:40 %bring%leave_me:-23 %bring%meaning:23
%bring%message:84 %bring%odometer:-28 %bring%on_way:-28 %bring%question:35 %bring%refuse:54 %bring%shift_it:-36
%bring%who:31 %bring%wrong_one:34 %busy:33 %busy%fails:32 %busy%how_long:26 %busy%question:-25 %busy%refuse:-36
%busy%staff:-29 %call_off%car:-26 %call_off%car_part:35 %call_off%do_it:-24 %call_off%doubt:53
%call_off%elsewhere:-43 %call_off%fails:-117 %call_off%family:65 %call_off%gone_car:44 %call_off%how_long:79
%call_off%leave_me:23 %call_off%lift:45 %call_off%meaning:37 %call_off%message:-55 %call_off%on_way:78
%call_off%opening:83 %call_off%question:175 %call_off%refuse:-50 %call_off%staff:71 %call_off%start_again:76
%call_off%thanks:541 %call_off%wrong_one:82 %car%do_it:-22 %car%gone_car:-112 %car%question:37 %car%refuse:-155
%car%season:31 %car%thanks:52 %car%who:26 %car%wrong_one:-88 %car_part:-75 %car_part%elsewhere:-25
%car_part%fails:-56 %car_part%how_long:-32 %car_part%leak:-31 %car_part%leave_me:178 %car_part%meaning:-46
%car_part%message:255 %car_part%money:-49 %car_part%on_way:-35 %car_part%place:-45 %car_part%question:49
%car_part%refuse:94 %car_part%shift_it:74 %car_part%smoke_smell:-51 %car_part%start_again:56 %car_part%thanks:67
%car_part%wrong_one:68 %do_it%doubt:36 %do_it%elsewhere:-115 %do_it%fails:34 %do_it%family:-108 %do_it%gone_car:-48
%do_it%leak:-30 %do_it%leave_me:50 %do_it%message:23 %do_it%odometer:-28 %do_it%question:24 %do_it%staff:-73
%do_it%start_again:53 %do_it%thanks:53 %doubt:39 %doubt%money:34 %doubt%on_way:-40 %doubt%question:144
%doubt%refuse:153 %doubt%staff:-29 %doubt%start_again:33 %doubt%thanks:47 %doubt%wrong_one:75 %elsewhere:108
%elsewhere%family:75 %elsewhere%gone_car:23 %elsewhere%money:-43 %elsewhere%odometer:64 %elsewhere%phone:-24
%elsewhere%place:-49 %elsewhere%question:-44 %elsewhere%refuse:-22 %elsewhere%staff:26 %elsewhere%thanks:49
%elsewhere%who:22 %elsewhere%wrong_one:-24 %fails:-130 %fails%on_way:40 %fails%place:-26 %fails%refuse:-41
%fails%shift_it:28 %family%gone_car:-23 %family%odometer:48 %family%place:22 %family%refuse:44 %family%staff:114
%family%start_again:28 %family%who:-41 %gone_car:-137 %gone_car%how_long:-22 %gone_car%money:-23
%gone_car%odometer:66 %gone_car%on_way:42 %gone_car%question:94 %gone_car%refuse:55 %gone_car%staff:25
%gone_car%thanks:90 %gone_car%who:99 %gone_car%wrong_one:63 %how_long%on_way:29 %how_long%opening:47
%how_long%refuse:84 %leak%wrong_one:38 %leave_me%message:67 %leave_me%money:-34 %leave_me%refuse:32
%leave_me%shift_it:36 %leave_me%start_again:-48 %leave_me%wrong_one:45 %lift:-45 %machine:-45 %machine%staff:-26
%meaning:-40 %meaning%question:-27 %message:-55 %message%question:-33 %message%refuse:-186 %message%start_again:-93
%message%wrong_one:-78 %money:50 %money%on_way:73 %money%pay_day:-24 %money%refuse:143 %money%season:24
%money%shift_it:-26 %money%staff:30 %money%start_again:-27 %money%thanks:28 %money%wrong_one:58 %noise:-60
%noise%odometer:-26 %noise%refuse:-23 %noise%thanks:24 %odometer:41 %odometer%question:35 %odometer%refuse:24
%odometer%season:27 %odometer%staff:74 %on_way%place:-43 %on_way%refuse:135 %on_way%shift_it:63
%on_way%start_again:63 %on_way%thanks:-25 %opening%question:26 %opening%refuse:92 %pay_day:-100 %pay_day%refuse:-35
%pay_day%season:-39 %phone:-136 %phone%shift_it:-47 %phone%staff:-33 %phone%wrong_one:-40 %place%refuse:42
%question:-155 %question%staff:77 %question%start_again:40 %question%thanks:140 %question%who:45
%question%wrong_one:84 %refuse:412 %refuse%season:-38 %refuse%staff:30 %refuse%start_again:37 %refuse%thanks:37
%refuse%who:-34 %refuse%wrong_one:-57 %season:-82 %shift_it:71 %shift_it%start_again:31 %shift_it%thanks:40
%smoke_smell:-62 %staff:65 %staff%who:35 %staff%wrong_one:73 %start_again:-35 %start_again%wrong_one:74
%thanks%who:52 %thanks%wrong_one:61 %who%wrong_one:33 %wrong_one:-94 @?:-137 @after_visit:-513 @car:-62 @confirm:-672
@confirm_stop:165 @day:39 @later:-218 @nothing:-324 @odometer:-53 @offers:93 @offers_:-49 @reading:-51 @times:-326
@walk_in:49 ^_$:-73 ^_a:84 ^_abren:-26 ^_actually:25 ^_ahora:-56 ^_ahorita:-60 ^_any:-110 ^_anything:40
^_appreciate:54 ^_aqui:-101 ^_are:-24 ^_as:161 ^_asi:210 ^_both:-81 ^_call:-26 ^_can:-69 ^_cant:116 ^_cars:25
^_como:-180 ^_cost:-27 ^_count:29 ^_cualquiera:-26 ^_cuanto:-37 ^_de:-92 ^_dejelo:38 ^_did:-42 ^_do:-144 ^_does:-27
^_dont:113 ^_either:-164 ^_eso:28 ^_fine:-32 ^_first:-34 ^_forget:34 ^_found:62 ^_going:123 ^_good:-45 ^_gracias:-187
^_had:-27 ^_hard:53 ^_how:-78 ^_id:53 ^_if:-34 ^_ill:40 ^_im:88 ^_imposible:31 ^_is:-132 ^_it:-85 ^_just:-35 ^_la:-91
^_last:-51 ^_leave:87 ^_let:-23 ^_lets:41 ^_lo:-77 ^_lol:-24 ^_me:-189 ^_mejor:130 ^_mi:37 ^_mil:-49 ^_muchas:-30
^_muy:165 ^_my:-54 ^_nd:-32 ^_need:-39 ^_negative:117 ^_negativo:65 ^_neither:193 ^_nel:146 ^_never:29 ^_ni:274
^_ninguna:98 ^_ninguno:75 ^_no:262 ^_nombre:37 ^_none:153 ^_nop:75 ^_not:89 ^_nothing:76 ^_nunca:-26 ^_ok:-168
^_on:26 ^_only:72 ^_option:-29 ^_para:128 ^_paso:43 ^_pass:64 ^_por:-163 ^_prefiero:49 ^_price:-26 ^_puedo:-55
^_put:-27 ^_que:-39 ^_quit:30 ^_scratch:25 ^_se:-66 ^_si:-219 ^_skip:50 ^_solo:35 ^_someone:-34 ^_sounds:-25 ^_st:-28
^_sure:81 ^_tengo:69 ^_thanks:-254 ^_that:129 ^_there:-69 ^_those:-30 ^_thumbsup:-35 ^_thursday:49 ^_todavia:-51
^_too:220 ^_we:131 ^_were:175 ^_what:-141 ^_why:-74 ^_will:-66 ^_wont:26 ^_works:-43 ^_y:-44 ^_ya:-97 ^_yeah:143
^_yep:-51 ^_yes:-151 ^_yo:93 ^_you:-76 ^_your:-78 ^_zero:41 a:93 a__el:-22 a__for:23 a__hora:50 a__horas:35 a__que:44
a__time:-58 a_customer:-28 a_esa:60 a_esas:37 a_good:-79 a_guy:113 a_hacer:41 a_la:-33 a_mechanic:32 a_mi:28 a_no:32
a_ser:27 about:82 about__tires:49 about_it:-81 about_oil:42 about_the:52 accident:-24 aceite:60 aceite_$:49
acomoda:27 actually:32 after:41 after_all:34 again:-22 again_$:-45 agarra:-33 agarran:-23 agendeme:-40 aguanta:-23
aguanta_$:-23 ahi_$:80 ahi_paso:-37 ahi_voy:-38 ahora:-91 ahora_$:-48 ahora_no:-91 ahorita:-112 ahorita_$:-46
ahorita_no:-62 aint:28 al:56 alguien:26 alguien_que:30 all:174 all__them:-35 all_day:-52 all_set:195 all_that:30
already_$:-24 already_did:-36 already_got:27 alright:32 also:41 am:-39 am_$:-26 amable:-24 amable_$:-27 amables:-30
amor:22 an:34 an__change:-28 an_appointment:67 an_oil:-28 and:59 and__is:39 and_did:-30 and_not:29 and_the:-22
anda:24 another:-35 answer:42 antes:-41 antes_de:-23 any:-94 any__them:31 any__those:-65 any_day:-27 anymore:-33
anymore_$:-29 anything_but:48 anyway:117 anyway_$:112 apenas:22 appointment:44 appreciate:28 aqui:-186 aqui_$:-80
aqui__vive:-48 aqui_no:-112 are:-27 are_$:-34 are_fine:-28 arreglaron:-60 arreglo:59 as:179 as_soon:22 asi:378
asi_$:36 asi__bien:75 asi__no:25 ask:-38 ask_me:-22 asked:-23 at:-88 at_all:-39 at_the:-42 away:37 ayer:-35 back:28
back_$:-40 barato:22 be:67 be_$:61 be__that:25 be__there:47 be_back:70 be_there:-28 been:-43 before:-39 bien:129
bien_asi:35 bien_gracias:70 bien_no:43 book:-39 book_it:-33 both:-101 both_are:-31 bother:61 brakes:-29 bring:-25
buen:-39 busy:-47 but:242 but__much:27 but_how:26 but_i:24 but_ill:43 but_monday:-31 but_no:74 but_what:36 buy:26
by:-58 by__name:-34 by_that:-34 call:-51 call_me:-38 cambio:46 cambio__aceite:42 cambio_el:58 cambios:-46 can__it:27
cant:117 cant_do:169 cant_make:29 cant_say:-71 car_$:-31 car_is:94 caro:230 caro_$:131 carro_$:-30 cars:36 casa:70
casa_$:65 caso:100 caso_$:94 catch:-22 change:-24 change_$:-27 changed__mind:42 changed_my:37 changes:46 changes_$:67
charge:-30 cheaper:41 check:-30 choque:-42 church:24 cita:47 cita_el:24 cliente:-42 cochera:27 cochera_$:27 coming:33
como:-156 como_esta:40 como_no:-187 como_si:24 company:22 con:56 con__mecanico:-38 con__que:26 con_mi:-27 con_un:70
conmigo:25 conozco:-116 conozco_$:-70 conviene:48 conviene_$:48 cost:-53 count:28 count__out:32 count_me:29 creo:50
cualquiera:-27 cuando:-23 cuanto_es:22 customer:-41 da:-76 day:-25 day_$:-32 day__me:57 day_for:57 days:38 de:55
de__dos:30 de__llantas:70 de__me:51 de__no:-59 de__que:49 de__taller:-32 de__ya:36 de_aceite:24 de_aqui:-35 de_eso:22
de_las:65 de_los:49 de_noche:27 de_que:-36 de_veras:-32 dealer:72 decided:74 dejaron:33 dejelo:130 dejelo_asi:51
dejo:91 dejo_$:78 despues:-26 di:-22 dia_$:33 did:-146 did_it:-58 did_that:-29 did_the:-45 dije:29 dije_que:27
dime:61 dinero_$:-34 do:51 do_$:-88 do__do:24 do__guys:-30 do__instead:-26 do__need:-51 do__of:79 do__own:135
do_any:45 do_friday:25 do_i:-78 do_my:135 do_not:-45 do_that:28 do_thursday:48 does:-25 does_it:-30 doesnt:106
doesnt_matter:-35 doesnt_work:118 doing:56 doing_it:26 done:-31 dont:43 dont__a:-28 dont__any:-27 dont__it:101
dont__me:-78 dont__to:22 dont__you:-33 dont__your:96 dont_have:-80 dont_know:-59 dont_need:53 dont_own:-27
dont_see:-27 dont_stop:68 dont_text:-58 dont_think:105 dont_want:55 dos_me:33 down:-105 down_$:-73 drive_$:-35
earlier:-39 early:72 early_$:86 early_for:29 echo:22 either:-127 either_$:-51 el:-27 el__es:36 el__lo:27 el__no:29
el_aceite:55 el_cambio:-23 el_carro:29 el_dia:-24 el_jueves:57 el_mecanico:-23 el_momento:-24 el_otro:-22
el_sabado:-43 el_viernes:47 else:31 else_$:47 elsewhere:50 elsewhere_$:46 en__casa:84 en__garage:28 en_el:31
en_eso:23 en_la:40 en_otro:-25 end:-33 entiendo:-45 entran:-49 es:-72 es_$:-83 es__de:24 es_de:-36 es_mecanico:63
es_mi:-29 es_necesario:43 esa:80 esa__no:32 esa_hora:52 esas:80 esas_horas:44 escriban:-51 escriban_$:-30
ese_carro:31 ese_dia:23 ese_senor:-29 eso:95 eso_$:30 eso_de:25 eso_me:24 esos:58 esta__caro:103 esta_bien:-74
esta_muy:35 esta_semana:-22 estamos:106 este:-68 esto:-31 esto_$:-23 estoy:106 estoy_bien:162 even:31 ever:70
ever_$:77 existe:-30 falta:-29 far:31 favor:27 favor_$:39 fee:-26 feria:-70 fine:175 fine_$:87 fine__me:-45
fine_with:-36 first:-79 first_$:-41 fix:78 fix_it:66 fixed:-80 fixed_it:-29 flat_out:25 folks:23 for:140 for__me:-32
for__of:23 for_it:-80 for_me:222 for_my:31 for_nothing:-26 for_now:46 for_that:131 for_the:-36 for_this:28 forget:54
forget_it:80 found:91 freno:-53 freno_$:-45 friday:30 friday_$:111 friday_instead:-26 full:29 garage:39 garage_$:34
gauge:-35 gauge_is:-35 gave:50 gave_you:61 get:-47 go:-50 go__the:47 go_for:-30 go_to:60 going:70 going__be:-29
going__cost:-22 going__have:42 going_on:-29 going_to:98 good:74 good_$:114 good_for:-47 good_to:-23 got:29 got_a:130
got_it:-27 gracias:-38 gracias_$:-36 gracias__no:30 gracias__ya:45 gracias_pero:64 gracias_por:-29 gracias_ya:25
grandson:-27 gratis:29 gusta:28 gusto:-32 guy:111 guy_$:73 guy__it:-29 guys_$:-37 hablan:-25 hace:-82 hace_falta:22
hace_un:-25 hacer:23 hacer_$:24 had__done:26 had_my:-22 hago:53 hago_$:59 handled:-27 happen:24 happening:23
happy:-53 hard:67 hard_no:51 hardly:30 have:43 have__no:-33 have__say:36 have_a:-35 have_an:61 have_it:-40
have_never:-25 have_no:-42 have_someone:70 have_to:27 hay:-57 hay_problema:-31 he:-22 heat:-33 here:-44 hijo:39
him:-27 hora:36 horas:52 hot:-35 hours:30 house_$:22 how:44 how__is:52 how__was:32 how_about:-30 how_long:-26
how_much:27 i:-29 i__a:48 i__be:31 i__do:35 i__got:28 i__have:-28 i__it:-23 i__my:60 i__never:32 i__no:-35 i__on:22
i__see:-22 i__want:31 i__where:-22 i_am:-22 i_can:25 i_do:86 i_dont:-57 i_get:-23 i_go:50 i_got:66 i_just:22
i_like:31 i_need:-121 i_said:-36 i_think:-22 i_want:-83 i_will:55 id:80 id__not:46 id__talk:-40 idea:-86 idea_$:-38
if:93 if_i:-50 igual_$:-37 ill:81 ill__it:99 ill__there:-38 ill__you:-26 ill_be:-31 ill_let:23 ill_pass:70
ill_take:91 im:188 im__a:-25 im__it:26 im__of:-34 im__the:-77 im_all:42 im_down:-70 im_good:280 im_not:-115
im_out:-33 imposible:50 in_$:-23 in__day:68 in_october:-25 in_the:101 instead_$:-22 interesa:-52 interesa_$:-82
interest:25 interested_$:-30 into:57 is:-38 is_$:54 is__a:-68 is__going:-57 is__how:74 is__no:33 is_a:72 is_been:-22
is_fine:82 is_full:24 is_good:-66 is_not:-77 is_ok:36 is_that:-45 is_there:-51 is_too:127 isnt:30 it:108 it_$:-50
it__a:30 it__fine:73 it__me:-33 it__more:-31 it__this:51 it__to:-92 it_be:29 it_but:43 it_done:31 it_for:-43
it_going:-35 it_is:107 it_myself:73 it_no:-27 it_on:40 it_take:-28 it_wont:-46 jueves:42 just:77 just_had:-24
just_the:30 k:-22 keep:80 keep_me:32 know:-81 know_$:-23 know_you:-35 la:88 la__de:-29 la__no:-34 la_casa:73
la_cochera:27 la_luz:-35 la_pena:57 la_primera:-22 las:58 las_$:-36 las__el:28 las_llantas:49 late:45 late__me:29
late__the:57 late_in:57 later:-25 le:50 le__el:47 le__la:22 le__que:22 le_cambio:57 le_echo:22 le_falta:-49 le_voy:30
leave:120 leave_it:140 leave_me:-47 lejos:47 let_me:-55 lets:25 lets_do:-23 light:-23 like:33 like_a:25 like_i:22
like_it:-22 llantas:52 llantas_$:47 lleve:-40 llevo:57 lo:63 lo__con:36 lo__mi:-35 lo__para:22 lo__y:-30 lo__ya:-33
lo__yo:73 lo_arreglo:60 lo_choque:-42 lo_hago:72 lo_hizo:-23 lo_lleve:-38 lo_llevo:37 lo_necesito:-45 lo_que:22
lo_uso:39 lo_voy:40 loco:135 lol:57 lol_$:43 long:-38 longer:-94 longer__it:-50 longer__the:-32 longer_have:-41
looking:-29 los__me:41 los_cambios:-46 los_conozco:-53 los_dos:29 los_frenos:-30 lunes:-27 luz:-38 luz_de:-33
make_it:-24 mal:-27 mal_$:-44 manana:-38 manana_$:-25 mandando:43 mandando_$:62 manden:-48 manden_mas:-23
manden_mensajes:36 manden_nada:-40 mandenme:34 manejo:-35 many:-35 marcha:-69 marcha_$:-64 mas:-121 mas_$:-99
matter:-35 me_$:-95 me__falta:23 me__la:55 me__mas:-58 me__mensajes:37 me__nada:-104 me__the:31 me__y:22 me_about:164
me_acomoda:27 me_back:-22 me_but:29 me_cobraron:22 me_conviene:40 me_dejaron:32 me_escriban:-26 me_gusto:-32
me_in:-36 me_interesa:-58 me_llame:23 me_lo:71 me_now:50 me_off:-32 me_out:26 me_queda:84 me_rayaron:23 me_sale:-33
me_sirve:52 me_so:-25 mecanico:50 mecanico_$:59 mejor:95 mejor_no:27 mensajes:-31 mensajes_$:-69 mes:-25 mi:36
mi__es:54 mi__me:41 mi_amor:22 mi_hijo:39 mi_mecanico:25 mil:-42 mil_gracias:-30 miles_$:-22 mismo:31 momento:-118
momento_no:-65 monday:-41 mondays:67 money:30 money_$:25 more:-201 more_$:-118 mornings:-34 much_$:-27 much__it:27
much_is:-24 much_would:23 muere:35 must:-23 muy:268 muy_amable:-24 muy_caro:125 muy_temprano:141 my:133 my__back:-27
my__do:-26 my__in:25 my__oil:42 my__says:61 my_car:-35 my_mind:46 my_name:-22 my_number:39 my_own:147 my_wife:37
myself:95 myself_$:86 n:300 nada:43 nada_$:-22 nada__eso:24 name:-57 nd:-38 necesario:52 necesario_$:46 necesito:-38
necesito_$:-40 necessary:34 necessary_$:34 need:-122 need_$:45 need_a:-43 need_that:-38 need_to:-108 needed:64
needed_$:95 needing:26 negative:117 negativo:65 neither:194 neither_$:122 nel:146 nel_$:76 never_mind:32 new:-36
next:-22 ni:305 ni_el:41 ni_la:30 ni_lo:26 ni_loco:110 nice:125 ningun:-68 ninguna:115 ninguno:99 ninguno__los:51
ninguno_de:54 no:85 no_$:364 no__ahora:-57 no__and:-32 no__at:-62 no__bien:-44 no__carro:-25 no__cita:34
no__cliente:-32 no__conozco:-76 no__de:-44 no__dont:29 no__el:-72 no__en:-47 no__ese:-25 no__good:44 no__gracias:32
no__gusto:-32 no__hace:23 no__hago:-35 no__have:-36 no__here:-93 no__i:61 no__interesa:83 no__is:206 no__les:22
no__like:24 no__los:-25 no__me:71 no__mensajes:-42 no__necesario:50 no__necesito:32 no__ningun:-72 no__para:-42
no__problema:-37 no__que:-38 no__quien:-28 no__recibir:-67 no__texts:-25 no__that:-63 no__the:65 no__them:29
no__tiempo:-23 no__to:-30 no__voy:69 no__was:34 no__what:30 no__y:52 no__yet:-104 no__yo:-66 no__you:142
no_agarra:-33 no_and:124 no_but:87 no_car:-40 no_conozco:-36 no_creo:52 no_entiendo:-32 no_es:-150 no_esta:-45
no_existe:-30 no_frena:-23 no_gracias:265 no_hay:-66 no_i:142 no_idea:-81 no_im:53 no_it:28 no_just:40 no_keep:42
no_le:41 no_longer:-94 no_los:-36 no_manden:-32 no_mas:-49 no_me:-100 no_mi:30 no_more:-206 no_my:52 no_need:75
no_not:-86 no_ocupo:75 no_on:38 no_one:-89 no_perdon:-25 no_pero:51 no_problem:-63 no_puedo:74 no_quiere:-28
no_quiero:-31 no_se:-93 no_si:44 no_sigan:29 no_soy:-245 no_tengo:-122 no_thank:83 no_thanks:190 no_that:58
no_tiene:-45 no_traigo:-65 no_va:23 no_vive:-48 no_way:60 no_what:123 no_worries:-122 no_y:39 no_ya:95 noise:-28
noise__all:-22 noise_at:-22 noises:36 nomas:63 none:180 none__them:42 none__those:46 none_of:110 nop:80 nop_$:66
not:-73 not__at:30 not__car:-46 not__customer:-40 not__in:23 not__it:79 not__me:39 not__now:-67 not__that:25
not__the:73 not__this:-30 not__to:108 not__with:-44 not__yet:-41 not__you:-25 not_a:-80 not_at:58 not_coming:23
not_doing:37 not_for:61 not_friday:29 not_going:84 not_happy:-44 not_in:23 not_interested:88 not_monday:62 not_my:-61
not_right:-89 not_sure:-44 not_the:-74 not_to:36 not_today:-49 not_worth:100 not_yet:-156 nothing:37 nothing_$:-32
now:-130 now_$:-174 now__me:-40 now_and:22 number:-27 numero:-57 nunca_$:33 o_no:-22 october:-28 october_$:-28
ocupo:45 ocupo_$:26 of_them:25 of_those:42 of_town:-27 of_you:-27 off:-33 off_$:-68 off_my:29 oil:45 oil_changes:48
ok_$:123 old:32 on__now:-26 on_my:-41 on_that:48 on_this:58 one:-29 one_of:24 only:96 only__me:61 opcion_$:-25
option:-37 or:-48 or_anything:30 or_no:-26 otono:-23 otro:26 otro_$:-28 otro_dia:62 our:31 out:-24 out__town:-27
out_of:-40 over_$:-33 over_here:68 own:82 own_$:34 own_it:-35 own_oil:42 owner:-47 para:78 para__lo:-45
para__sabado:-35 para__si:24 para_el:-58 para_nada:161 para_no:-23 parts:-24 pasa:-43 pasa__no:-42 pasa_si:-34
pass:236 pass_$:122 passed:-46 pay:-22 pena:66 people:-30 perdon:-33 perdon_$:-25 perfect:-24 pero:132 pero_no:49
pero_ya:28 persona:-39 please:-34 please_$:-27 por:-110 por__no:-149 por_ahora:-74 por_favor:32 por_que:-156
por_un:24 precio:-24 prefiero:57 prefiero_no:33 prende:-48 prende_$:-32 price:-64 price_$:-23 prices:73 primera:-22
problem:-64 problem_$:-61 problema:-44 puedo_$:51 puedo_el:32 put:-70 put__in:-34 put_me:-22 putting:59 que:-71
que_$:22 que__caro:-22 que__le:-22 que__llame:22 que__si:-35 que__ya:25 que_cobran:23 que_es:-33 que_lo:-36
que_no:-42 que_pasa:-34 que_si:41 que_va:60 queda:97 queda_$:72 queda__lejos:41 quedo:-45 quien:24 quien_es:-29
quien_me:49 quienes:-37 quienes_son:-37 quiero:-60 quiero__de:-23 quiero_cita:26 quiero_recibir:-66 quit:30
quit_sending:37 rather:43 rather__to:-41 rather_not:45 rather_talk:-46 rayaron:22 ready:-43 ready_$:-41 recibir:-85
reminders:74 reminders_$:76 replaced:-42 right:71 right_$:249 right_now:-144 road:-22 runs:30 sabado:-54 sabado_$:-45
said_no:-27 sale:-31 sale_$:-29 salir:-24 saturday:32 saturday_$:39 say_no:-23 says:54 schedule:-25 scratch:23
scratch_that:25 se:-133 se__que:-33 se_lo:-37 se_me:33 second:-34 second_$:-52 see:-53 semana:-23 semana_$:-24
send:-32 send_me:-38 sending:47 sending_me:33 ser:28 set:187 set_$:145 set_for:45 shop:-73 shop_$:-27 shop_is:-23
si:-194 si_$:-59 si__interesa:-25 si__no:-100 si_como:-30 si_gracias:-26 si_no:-45 si_ya:-50 siempre:40 siempre_no:32
sigan:50 sigan_mandando:30 sin:28 sir:42 sir_$:42 sirven:22 sits:23 skip:87 skip_it:36 so:163 so_$:31 so_much:-31
so_no:150 sold:-113 solo:92 someone:53 someone_$:34 somewhere:52 son:-55 son_$:-28 soon:35 sorry:82 sorry_$:89
sorry__is:-26 sounds:-29 sounds_good:-34 soy:-243 soy__persona:-43 soy_cliente:-33 soy_el:-36 soy_esa:-26 soy_la:-22
soy_yo:-64 squeak:60 st:-30 st_$:-28 still:-36 stop:-46 stop_$:-101 stop__me:67 stop__the:72 stop_with:72 stuff:48
su:31 super:-29 swapped:-30 take:54 take__off:-45 take_it:31 take_me:-46 take_my:115 take_the:-27 taken:-22
taken__of:-22 talk:-49 talk_to:-40 taller:-39 taller_$:-23 tanto:-22 tarde:35 tell:-26 temprano:83 temprano_$:68
tengo:30 tengo__me:42 tengo_carro:-36 tengo_quien:42 tengo_tiempo:-23 text__about:89 texting:48 texting_$:-42
texting_me:64 texts:-49 texts_$:-51 th:-46 th_$:-27 thank:65 thank_you:71 thanks:-45 thanks_$:-52 thanks__no:24
thanks__nothing:-26 thanks_but:71 thanks_for:-89 that__you:34 that_is:60 that_name:-34 that_old:34 that_one:23
that_wont:44 that_would:-33 the:29 the__change:22 the__for:157 the__is:75 the__of:-35 the__one:-28 the__went:40
the_car:69 the_day:69 the_dealer:69 the_earlier:-25 the_owner:-45 the_same:24 the_th:-45 the_tire:49 the_tires:42
the_wheels:22 the_wiper:31 the_work:-34 them_$:31 then_$:27 there:-101 there__a:-22 there__no:-48 there_a:-42
there_is:-67 these_days:26 thing:27 thing_$:27 think:-77 think__it:-93 think_about:-70 think_so:56 think_this:-24
thinking:32 thinking_of:33 this_is:-55 this_number:-24 this_one:52 this_time:68 this_week:-40 those:85
those_tires:-23 though:46 thought:32 three:48 three_$:38 through:-44 thumbsup:-35 thumbsup_$:-35 thursday:37
thursday_$:25 thursday__work:64 thursday_at:-28 tiempo:-28 tiene:-50 tienen:44 time:37 time_$:65 tires:25 tires_$:33
to:-71 to__for:-26 to__guy:26 to__in:24 to__it:80 to__me:-38 to__no:53 to__to:24 to_a:-23 to_be:-46 to_cost:-22
to_do:52 to_fix:25 to_have:41 to_know:-23 to_say:82 to_stop:-26 to_that:-68 to_the:33 todavia:-33 todavia_no:-51
today:-51 today_$:-50 todos:23 too:320 too_$:-57 too__for:176 too_early:142 too_far:38 too_late:73 took:-32
took__of:-25 took_care:-23 top:45 town:-33 town_$:-25 trabajando:26 traigo:-63 trip:-25 truck:-23 try:154 turn:-24
un:47 unless:37 up:-64 up_$:-40 up_the:29 use:28 uso:39 uso_$:31 ustedes:-46 ustedes_$:-76 va:96 va_$:43 va_a:24
vale:54 van:-30 ve:35 vehicle:-38 vemos:-25 vemos_$:-23 vendi:-34 veras:-32 verdad:22 vez:28 vez_me:22 viernes:25
viernes_$:43 vive:-48 voy_$:-44 voy__hacer:31 voy_a:67 vueltas:27 vuelvo:23 want:-39 want_it:55 was_it:27 was_the:24
way:66 we:142 we__the:47 we_dont:-27 we_have:82 we_sold:-50 we_will:102 week:-66 week_$:-58 went_away:45 were:165
what:46 what__it:51 wheel:-30 when:68 when_i:-37 while:-41 who:55 who__are:-36 who__this:37 who__you:59 who_is:32
who_you:-57 whole:35 why:-79 why_not:-100 wife:29 wife_says:46 will:23 will__be:51 will_do:-54 will_it:-32 wiper:33
wipers:43 wipers_$:45 with:-43 with_me:-40 with_the:47 wont:65 wont__over:-29 wont_be:93 wont_go:-34 wont_work:56
work:62 work_$:25 work__me:52 work_for:51 works:-46 works_$:-57 worries:-122 worth:175 would_be:-38 would_it:23
wrong:-35 y:32 y_$:-25 y__no:-33 y_que:27 y_ya:-30 ya:-79 ya__de:33 ya__existe:-30 ya__gracias:38 ya__hace:-42
ya__lleve:-36 ya__lo:-34 ya__me:-24 ya_le:-23 ya_lo:-56 ya_no:-84 ya_quedo:-22 ya_tengo:96 yeah_$:-183 yeah_no:27
year:30 year_$:27 yep:-51 yep_$:-22 yes:-199 yes_$:-96 yet:-214 yet_$:-172 yo:141 yo_$:-60 yo__la:75 yo__le:62
yo__soy:-62 yo_lo:174 yo_mismo:28 yo_ni:-48 yo_no:-108 you:-43 you_$:-61 you__do:-27 you__it:-56 you__my:22
you__used:23 you__what:28 you_are:-34 you_can:54 you_know:27 you_my:70 you_think:-47 you_to:-26 your:43
your__have:-33 your__is:-27 your_shop:-37 yours_$:-25 zero:67
"""
