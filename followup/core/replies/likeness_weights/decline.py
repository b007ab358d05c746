"""What speaks for and against `decline`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "decline"
BIAS = -121
WEIGHTS = """\
#abad:-50 #abla:-32 #able:-40 #abou:61 #abre:-23 #acci:-22 #aced:-31 #acei:47 #acer:20 #acia:-20 #acom:28 #actu:36
#agar:-50 #agen:-42 #agra:19 #agua:-22 #ahor:-149 #aigo:-63 #ains:31 #ajan:19 #akes:-18 #aler:68 #algu:36 #alle:-46
#alls:95 #alqu:-20 #also:35 #amab:-53 #amos:130 #anan:-22 #ance:76 #anda:58 #ands:-27 #anej:-48 #ange:28 #anic:45
#anks:-58 #anne:-30 #anot:-25 #answ:23 #ante:-42 #anyw:106 #apen:18 #aper:45 #appo:29 #appr:20 #appy:-48 #aqui:-151
#arag:31 #arca:-31 #arch:-64 #arde:34 #ards:18 #aria:-30 #ario:41 #arli:-32 #arlo:29 #arly:52 #arou:21 #arra:-60
#arts:-20 #asad:21 #aske:-20 #asse:-46 #aste:105 #athe:27 #atis:26 #ativ:139 #atte:-46 #atur:37 #auge:-29 #aunq:25
#avia:-50 #avor:31 #away:29 #ayar:19 #ayer:-32 #ayin:18 #bado:-50 #baja:23 #bate:-19 #been:-26 #befo:-31 #bien:94
#bill:-23 #bios:-38 #blan:-22 #blem:-89 #bles:-38 #book:-21 #both:-38 #boug:-18 #bout:61 #brak:-28 #brar:20 #bren:-23
#brin:-29 #bsup:-34 #buck:28 #buen:-37 #busy:-42 #call:30 #canc:-45 #cand:-37 #cani:35 #cant:101 #card:41 #caro:166
#casa:58 #casi:21 #caso:83 #catc:-20 #ccid:-20 #ceit:47 #cesa:49 #cesi:-31 #cess:29 #chan:135 #char:-20 #chas:-19
#chea:43 #chec:-18 #cher:21 #choq:-40 #chur:28 #cias:-25 #ciat:20 #cibi:-77 #cide:33 #cidi:18 #cido:56 #cita:45
#cked:26 #clas:29 #clie:-34 #clin:19 #cobr:27 #coch:21 #cojo:21 #comi:39 #como:-123 #comp:42 #cond:-24 #conf:-19
#conm:23 #cono:-25 #cont:-51 #conv:64 #cool:-18 #corr:-22 #cost:-41 #coun:27 #cran:-26 #crat:18 #creo:32 #crib:-48
#cros:20 #ctob:-26 #ctua:42 #cual:-27 #cuan:-23 #cupe:53 #curi:41 #cust:-37 #dand:38 #dang:18 #davi:-44 #days:72
#ddle:-19 #deal:58 #deci:74 #deja:43 #deje:71 #dejo:82 #deme:-26 #denm:32 #dent:-33 #ders:56 #desp:-19 #dial:46
#dice:21 #diga:-32 #dime:56 #ding:101 #dled:-21 #does:75 #doin:38 #done:-20 #dont:27 #doub:-115 #down:30 #dson:-26
#dule:-18 #eady:-28 #eale:67 #ease:-19 #eave:115 #ecal:80 #ecan:34 #eces:34 #ecib:-80 #ecid:74 #ecke:21 #ecoj:23
#econ:-25 #edan:-25 #eded:65 #edes:-54 #edin:23 #edul:-18 #eede:65 #eedi:23 #eepi:29 #efie:42 #efor:-31 #egat:159
#egla:-38 #eglo:52 #ehic:-21 #eite:47 #eith:44 #ejel:93 #ejor:82 #ejos:50 #elli:36 #ello:24 #eloc:-18 #else:45
#eman:-19 #embe:-18 #emin:60 #emos:-32 #empo:-25 #empr:76 #ench:30 #ende:-71 #endo:-30 #endr:-18 #enen:36 #engo:26
#enin:38 #ensa:-27 #ensi:63 #ente:-58 #enti:-23 #ento:-71 #entr:-45 #eocu:41 #eone:51 #eopl:-36 #epin:29 #epla:-31
#eras:-27 #erch:21 #erdo:-33 #eren:-33 #eres:50 #erfe:-26 #eria:-46 #erne:18 #erou:18 #erra:23 #erse:-34 #erso:-41
#erta:28 #esar:48 #esas:67 #escr:-54 #esit:-31 #esnt:82 #esos:49 #essa:22 #esse:-27 #este:-70 #esto:27 #even:33
#ever:50 #eves:26 #ewhe:91 #exac:-25 #exis:-28 #expe:62 #exte:-49 #exts:-35 #eyre:19 #favo:31 #fect:-26 #feel:-27
#fere:-22 #feri:-56 #fier:44 #fine:137 #firm:-31 #firs:-55 #fixe:-61 #fore:-32 #forg:20 #fort:24 #foun:71 #fren:-80
#frid:23 #full:27 #gara:31 #garr:-49 #gast:28 #gati:159 #gaug:-29 #gave:36 #gear:-18 #gend:-33 #gero:18 #gett:20
#ghte:19 #glar:-33 #goin:52 #good:47 #grab:-18 #grac:-25 #grad:18 #grat:25 #gual:-25 #guna:89 #guno:78 #habl:-40
#hace:-31 #haga:47 #hago:50 #hanc:119 #hand:21 #hank:26 #happ:-19 #hard:60 #hast:-27 #have:27 #heap:48 #heat:-37
#hedu:-18 #hera:20 #here:-27 #heyr:19 #hich:-25 #hicl:-20 #hijo:34 #hile:-36 #hing:33 #hink:-41 #hist:22 #hoqu:-40
#hori:-80 #hose:74 #houg:59 #hour:41 #hree:48 #hrou:-35 #humb:89 #hurc:28 #iate:20 #iban:-38 #ibir:-86 #ible:34
#ices:58 #icio:-26 #icle:-20 #iday:22 #idea:-95 #ided:63 #iden:-24 #iend:-34 #iern:25 #ierr:23 #igan:46 #ight:35
#igua:-26 #imer:-23 #imes:19 #imon:-19 #imos:-22 #impo:51 #ince:30 #inda:-32 #inde:39 #ingo:-22 #ingu:108 #inki:37
#inst:19 #inte:26 #intm:31 #into:55 #invi:27 #ione:-33 #iosi:31 #iper:64 #irma:-22 #irst:-55 #irve:32 #ises:34
#isim:-24 #ismo:21 #isnt:28 #ithe:44 #ixed:-61 #jalo:26 #jaro:28 #jelo:93 #jenl:20 #juev:27 #just:39 #keep:36
#know:-60 #lace:-33 #lama:-20 #lant:19 #laro:-55 #lash:22 #late:24 #leav:109 #leep:32 #lejo:37 #lema:-36 #lent:-20
#lest:-24 #leve:-23 #levo:50 #lgui:21 #lien:-41 #lier:-30 #like:19 #lina:22 #lind:-34 #ling:22 #llam:-26 #llan:42
#lleg:-26 #ller:-39 #llev:27 #llin:44 #loci:-18 #loco:124 #long:-108 #lood:18 #look:-33 #lqui:-20 #lsew:45 #ltim:-18
#lvid:37 #lyin:19 #mabl:-53 #mana:-25 #mand:27 #mane:-49 #mann:-25 #many:-30 #marc:-105 #mari:-25 #mart:-19 #mati:-22
#matt:-35 #mber:-35 #mbsu:-34 #meca:35 #mejo:82 #mens:-24 #ment:-68 #meon:51 #mero:-65 #mewh:46 #migo:35 #mind:52
#ming:25 #moda:28 #mole:-24 #mome:-106 #mond:29 #mone:18 #more:-157 #morn:-46 #mpan:28 #mpos:50 #mpra:59 #mpre:-20
#much:-65 #muer:32 #myse:75 #nada:50 #name:-99 #nana:-22 #ncel:-45 #nces:101 #nche:26 #ncio:29 #ndan:52 #ndar:-18
#nday:20 #ndem:-32 #nder:28 #ndin:77 #ndso:-26 #nece:47 #nega:153 #neit:165 #neja:-19 #nejo:-27 #ners:-25 #nfor:23
#nger:-39 #nges:38 #ngin:-24 #ngun:108 #nice:95 #nico:32 #ning:136 #nkin:18 #nmig:23 #noma:42 #nomb:60 #none:210
#noth:34 #nozc:-82 #nque:25 #nsaj:-24 #nste:-18 #nswe:23 #ntac:-23 #ntas:42 #ntem:-18 #nter:42 #ntes:-53 #ntme:31
#ntra:-49 #nume:-45 #nven:18 #nvie:61 #nywa:106 #ober:-43 #oble:-78 #obra:44 #oche:19 #ocid:38 #ocup:55 #odav:-44
#oday:-41 #odos:21 #oesn:82 #oing:89 #oint:53 #oles:-34 #olvi:35 #omas:40 #omen:-106 #omeo:51 #omer:-39 #omew:46
#omin:22 #omod:28 #omor:-19 #ompa:38 #onan:21 #onda:43 #ones:37 #oney:18 #onfi:-33 #onge:-63 #only:86 #onmi:23
#onoz:-82 #onta:-28 #onte:-19 #onvi:48 #ople:-37 #opti:-29 #oque:-40 #oras:55 #orda:21 #orge:26 #orit:-86 #orks:-29
#orni:-46 #orre:-27 #orri:-88 #orry:69 #orth:156 #osib:50 #othe:35 #othi:20 #ould:-23 #ound:67 #ount:27 #owne:-43
#ozco:-82 #para:72 #part:-24 #pass:150 #payi:18 #pena:78 #pend:49 #peni:30 #pens:57 #peop:-36 #perd:-33 #perf:-26
#pero:90 #phil:-18 #plac:-34 #plea:-31 #poin:54 #poke:37 #posi:50 #pped:-20 #ppen:29 #ppoi:29 #ppre:20 #pran:60
#pref:30 #pren:-39 #preo:41 #pres:-59 #pric:46 #prim:-47 #prob:-97 #ptio:-29 #pued:18 #puer:18 #pues:-32 #quea:65
#quie:-71 #quit:31 #raci:-27 #rage:31 #raig:-58 #rake:-28 #ranc:-25 #rand:-26 #rank:-26 #rano:59 #ratc:18 #rath:31
#rati:21 #rato:41 #raya:19 #rcha:-34 #rday:25 #rdon:-26 #reac:-19 #reca:79 #rech:-18 #reci:-73 #reco:23 #rect:-22
#refi:42 #remi:60 #rena:-22 #rend:-39 #reno:-56 #reoc:41 #repl:-40 #resa:-44 #resp:19 #ress:-18 #rest:28 #rfec:-26
#rget:26 #riba:-40 #rice:42 #rida:23 #ries:-87 #righ:69 #rime:-23 #rimo:-19 #ring:-43 #rios:35 #rita:-84 #rito:22
#rlie:-32 #rmat:-18 #rnes:18 #rnin:-39 #road:-18 #robl:-96 #rong:-27 #ross:20 #roug:-48 #roun:27 #rous:18 #rque:-18
#rrec:-21 #rrie:-98 #rsda:32 #rson:-41 #ruid:-23 #runs:20 #saba:-50 #saje:-21 #sale:-29 #sali:-30 #sari:40 #sary:29
#satu:33 #says:48 #sche:-18 #scri:-49 #seas:-29 #seco:-24 #self:76 #sell:33 #sema:-19 #sewh:45 #shop:-49 #sibl:39
#sida:24 #sien:37 #siga:58 #sign:-33 #sima:-23 #simo:-22 #sinc:20 #sing:19 #sirv:28 #sito:-29 #sked:-20 #skip:51
#slee:32 #sold:-88 #solo:71 #some:61 #sona:-23 #soon:24 #sorr:62 #soun:-29 #spen:55 #spok:37 #sque:63 #ssed:-65
#stam:92 #stan:-30 #stay:26 #sted:-33 #sten:-22 #stil:-31 #stol:-18 #stom:-37 #stop:-33 #stoy:78 #stri:28 #stuf:33
#supe:-26 #swap:-24 #swer:23 #tact:-23 #take:22 #talk:-31 #tall:-49 #tamo:99 #tand:-50 #tard:29 #tche:19 #tead:-18
#tede:-54 #tell:-33 #teme:-20 #temp:61 #tend:-31 #teng:25 #tere:42 #tern:-19 #text:-88 #than:32 #ther:24 #thos:67
#thou:64 #thre:44 #thro:-36 #thum:88 #tiem:-18 #tien:-46 #till:-33 #time:28 #ting:70 #tion:-40 #tira:-29 #tire:24
#tive:98 #tivo:36 #tmen:31 #tobe:-26 #toda:-73 #tole:-18 #tome:-35 #took:-25 #town:-31 #trai:-65 #tran:-33 #tres:24
#tter:-55 #ttin:64 #tual:39 #tues:-27 #tuff:33 #turd:33 #turn:-32 #uall:28 #ualq:-20 #uand:-19 #ucha:-23 #ueak:67
#ueda:55 #uena:-19 #uere:50 #ueve:28 #uier:-64 #ulti:-18 #umbs:89 #umer:-45 #unch:-20 #unde:-19 #unds:-24 #unqu:25
#uper:-26 #uphi:-18 #urch:28 #urda:33 #urio:41 #ursd:32 #usta:20 #uste:-56 #usto:-60 #utti:55 #vale:52 #varl:21
#vehi:-21 #velo:-18 #vemo:-26 #vend:-22 #vera:-34 #verc:21 #vers:-34 #viaj:-29 #vide:40 #vien:46 #vier:62 #ving:18
#vive:-43 #want:-46 #wapp:-24 #week:-57 #were:118 #what:30 #when:56 #wher:90 #whic:-24 #whil:-36 #whol:20 #wife:25
#will:28 #wipe:61 #wner:-34 #wont:47 #work:29 #worr:-88 #wort:147 #wron:-27 #xact:-25 #xist:-28 #xtee:-53 #xtin:25
#yaro:19 #year:34 #ying:43 #ysel:75 #yway:106 #zero:70 %again_later:-130 %again_later%agree:-36 %again_later%away:-41
%again_later%bad:18 %again_later%bring:-45 %again_later%busy:-31 %again_later%car:51 %again_later%doubt:50
%again_later%family:40 %again_later%message:-18 %again_later%money:-33 %again_later%on_way:117
%again_later%opening:27 %again_later%pay_day:-38 %again_later%phone:46 %again_later%question:-26
%again_later%staff:25 %again_later%start_again:18 %again_later%thanks:19 %again_later%wrong_one:61 %agree:-71
%agree%away:44 %agree%bring:-103 %agree%busy:-22 %agree%call_off:64 %agree%car:112 %agree%car_part:204
%agree%do_it:21 %agree%doubt:-42 %agree%fails:-25 %agree%family:-24 %agree%how_long:-63 %agree%leave_me:-19
%agree%lift:-26 %agree%money:-38 %agree%phone:19 %agree%place:42 %agree%question:155 %agree%refuse:-53
%agree%shift_it:-26 %agree%start_again:-28 %agree%thanks:145 %agree%wrong_one:62 %away%bring:-20 %away%busy:-19
%away%do_it:80 %away%doubt:-44 %away%elsewhere:-33 %away%fails:29 %away%how_long:-19 %away%leave_me:-19
%away%lift:-21 %away%money:32 %away%noise:40 %away%on_way:-44 %away%place:35 %away%refuse:139 %away%staff:27
%away%thanks:52 %bad%call_off:25 %bad%car_part:46 %bad%doubt:31 %bad%refuse:20 %bad%wrong_one:21 %bring:28
%bring%busy:-21 %bring%call_off:-89 %bring%car_part:60 %bring%doubt:-34 %bring%elsewhere:50 %bring%family:-20
%bring%leak:23 %bring%message:73 %bring%money:-37 %bring%odometer:-20 %bring%on_way:-20 %bring%question:31
%bring%refuse:57 %bring%who:22 %bring%wrong_one:28 %busy:32 %busy%fails:32 %busy%how_long:24 %busy%question:-23
%busy%refuse:-27 %busy%staff:-24 %busy%wrong_one:23 %call_off:60 %call_off%car:-30 %call_off%doubt:38
%call_off%elsewhere:-37 %call_off%fails:-86 %call_off%family:48 %call_off%gone_car:50 %call_off%how_long:71
%call_off%leave_me:-21 %call_off%lift:44 %call_off%meaning:28 %call_off%message:-27 %call_off%money:20
%call_off%on_way:64 %call_off%opening:69 %call_off%question:163 %call_off%refuse:-31 %call_off%shift_it:-26
%call_off%staff:60 %call_off%start_again:50 %call_off%thanks:459 %call_off%wrong_one:63 %car%elsewhere:20
%car%gone_car:-86 %car%lift:-27 %car%on_way:-18 %car%refuse:-146 %car%start_again:22 %car%thanks:39 %car%who:24
%car%wrong_one:-51 %car_part:-46 %car_part%elsewhere:-25 %car_part%fails:-38 %car_part%how_long:-19
%car_part%leak:-21 %car_part%leave_me:150 %car_part%meaning:-32 %car_part%message:208 %car_part%money:-26
%car_part%on_way:-20 %car_part%place:-34 %car_part%refuse:43 %car_part%shift_it:40 %car_part%smoke_smell:-39
%car_part%start_again:36 %car_part%thanks:66 %car_part%wrong_one:48 %do_it:19 %do_it%doubt:30 %do_it%elsewhere:-82
%do_it%fails:37 %do_it%family:-85 %do_it%gone_car:-62 %do_it%leak:-22 %do_it%leave_me:31 %do_it%message:19
%do_it%odometer:-27 %do_it%question:22 %do_it%staff:-56 %do_it%start_again:42 %do_it%thanks:39 %doubt:29
%doubt%family:-20 %doubt%leave_me:-18 %doubt%money:31 %doubt%on_way:-28 %doubt%question:109 %doubt%refuse:99
%doubt%staff:-18 %doubt%start_again:20 %doubt%thanks:37 %doubt%wrong_one:77 %elsewhere:100 %elsewhere%family:62
%elsewhere%money:-21 %elsewhere%odometer:59 %elsewhere%place:-39 %elsewhere%thanks:35 %elsewhere%who:33
%elsewhere%wrong_one:-46 %fails:-93 %fails%on_way:48 %fails%place:-23 %fails%refuse:-24 %fails%shift_it:27
%fails%thanks:18 %family%noise:-19 %family%odometer:31 %family%place:18 %family%refuse:29 %family%season:23
%family%shift_it:-19 %family%staff:105 %family%start_again:26 %family%who:-31 %gone_car:-104 %gone_car%odometer:64
%gone_car%on_way:20 %gone_car%question:73 %gone_car%refuse:41 %gone_car%staff:32 %gone_car%thanks:74 %gone_car%who:74
%gone_car%wrong_one:64 %how_long%on_way:25 %how_long%opening:35 %how_long%phone:18 %how_long%refuse:75 %leak:-29
%leave_me%message:39 %leave_me%money:-26 %leave_me%shift_it:33 %leave_me%start_again:-28 %leave_me%wrong_one:45
%lift:-50 %machine:-32 %machine%staff:-21 %meaning:-20 %meaning%phone:-18 %message:-43 %message%question:-28
%message%refuse:-157 %message%start_again:-52 %message%wrong_one:-49 %money:52 %money%on_way:59 %money%pay_day:-19
%money%question:24 %money%refuse:107 %money%season:23 %money%shift_it:-18 %money%staff:32 %money%thanks:22
%money%wrong_one:48 %noise:-45 %noise%odometer:-22 %noise%staff:21 %noise%thanks:23 %odometer%refuse:22
%odometer%season:34 %odometer%staff:74 %on_way%place:-42 %on_way%refuse:127 %on_way%shift_it:50
%on_way%start_again:62 %opening%refuse:82 %pay_day:-74 %pay_day%refuse:-27 %pay_day%season:-27 %phone:-123
%phone%shift_it:-34 %phone%start_again:24 %phone%who:23 %phone%wrong_one:-32 %question:-129 %question%refuse:-18
%question%staff:61 %question%start_again:59 %question%thanks:137 %question%who:53 %question%wrong_one:87 %refuse:306
%refuse%staff:20 %refuse%start_again:20 %refuse%wrong_one:-40 %season:-44 %season%thanks:21 %shift_it:50
%shift_it%thanks:27 %shift_it%wrong_one:19 %smoke_smell:-28 %staff:48 %staff%thanks:18 %staff%who:38
%staff%wrong_one:45 %start_again:-43 %start_again%wrong_one:53 %thanks:-19 %thanks%who:52 %thanks%wrong_one:43
%who%wrong_one:21 %wrong_one:-98 @?:-106 @after_visit:-389 @car:-22 @confirm:-574 @confirm_stop:141 @day:21
@later:-152 @nothing:-273 @odometer:-65 @offers:85 @offers_:-51 @reading:-28 @time:-58 @times:-232 ^_$:-57 ^_a:58
^_abren:-26 ^_ahi:-21 ^_ahora:-49 ^_ahorita:-39 ^_any:-93 ^_anything:40 ^_appreciate:46 ^_aqui:-83 ^_are:-19 ^_as:141
^_asi:178 ^_ask:19 ^_both:-73 ^_call:-20 ^_can:-57 ^_cant:105 ^_como:-143 ^_cost:-22 ^_count:33 ^_cuanto:-23 ^_de:-90
^_did:-33 ^_do:-94 ^_dont:98 ^_either:-144 ^_ese:28 ^_fine:-27 ^_first:-27 ^_found:53 ^_going:108 ^_good:-36
^_got:-23 ^_gracias:-155 ^_had:-20 ^_hard:33 ^_how:-58 ^_id:47 ^_if:-32 ^_im:64 ^_is:-94 ^_it:-62 ^_just:-29 ^_la:-59
^_last:-39 ^_le:22 ^_leave:59 ^_lo:-56 ^_lol:-24 ^_me:-147 ^_mejor:93 ^_mi:41 ^_mil:-42 ^_muchas:-25 ^_muy:136
^_my:-25 ^_nd:-30 ^_need:-28 ^_neither:164 ^_nel:90 ^_never:19 ^_ni:198 ^_ninguna:74 ^_ninguno:56 ^_no:202 ^_none:110
^_nop:58 ^_not:74 ^_nothing:49 ^_nunca:-19 ^_ok:-132 ^_on:22 ^_only:65 ^_option:-22 ^_para:111 ^_paso:31 ^_pass:48
^_por:-150 ^_prefiero:38 ^_price:-18 ^_puedo:-45 ^_put:-26 ^_que:-43 ^_quiero:-20 ^_quit:26 ^_se:-47 ^_si:-138
^_simon:-18 ^_solo:33 ^_someone:-32 ^_sorry:-18 ^_sounds:-20 ^_sure:68 ^_tengo:45 ^_thanks:-232 ^_that:102
^_there:-50 ^_those:-27 ^_thumbsup:-34 ^_thursday:41 ^_todavia:-41 ^_too:160 ^_we:87 ^_were:137 ^_what:-107 ^_who:-18
^_why:-47 ^_will:-55 ^_wont:29 ^_works:-34 ^_y:-38 ^_ya:-68 ^_yeah:106 ^_yep:-40 ^_yes:-102 ^_yo:80 ^_you:-60
^_your:-63 ^_zero:42 a:61 a__after:21 a__en:19 a__for:20 a__hora:48 a__horas:35 a__que:43 a__time:-51 a_customer:-23
a_esa:55 a_esas:38 a_ese:-20 a_good:-81 a_guy:91 a_hacer:19 a_la:-29 a_mechanic:26 a_no:34 a_ser:29 about:61
about__tires:40 about_it:-62 about_oil:40 about_the:47 abren:-22 accident:-20 aceite:47 aceite_$:50 acomoda:29
actually:32 afford_it:-22 after_all:19 again_$:-36 agarra:-22 agendeme:-32 ahead_and:-18 ahi:-19 ahi_$:58 ahi_nos:-21
ahi_paso:-34 ahora:-75 ahora_$:-36 ahora_no:-72 ahorita:-76 ahorita_$:-33 ahorita_no:-40 al:53 algo:-25 alguien:21
all:121 all_$:-19 all__them:-30 all_day:-44 all_set:148 already_$:-19 already_did:-27 also:35 am:-31 am_$:-22
amable:-27 amable_$:-30 amables:-27 an:33 an__change:-22 an_appointment:51 an_oil:-22 and__i:25 and__is:24
and__it:-19 and_did:-27 and_it:-18 and_not:31 and_please:23 anda:25 ando:24 another:-22 answer:24 antes:-34 any:-75
any__but:-19 any__them:33 any__those:-61 any_day:-28 anyway:106 anyway_$:101 apenas:18 appointment:33 appreciate:22
aqui:-146 aqui_$:-59 aqui_no:-95 are_$:-28 are_fine:-23 around:21 around_$:21 arreglaron:-50 arreglo:52 as:130
asi:290 asi__no:20 ask:-38 asked:-20 at:-59 at_$:-19 at_all:-32 at_the:-48 aunque:25 away:29 ayer:-32 back_$:-33
bateria:-19 be:56 be_$:50 be__that:24 be__there:44 be_there:-21 been:-26 before:-31 bien:97 bien_asi:25
bien_gracias:66 bill:-21 book:-33 book_it:-29 both:-87 bother:49 bought:-18 brakes:-20 bring:-28 buen:-28 busy:-42
but:182 but__is:21 but__much:26 but_how:25 but_ill:44 but_monday:-35 but_no:64 but_what:36 by:-49 by__name:-29
by_that:-29 call:-43 call_me:-24 cambio:41 cambio__aceite:38 cambios:-38 can__me:22 can__with:20 cancel:-19 cant:101
cant_do:144 cant_make:30 car:34 car_$:-21 car_is:78 card:23 cards:18 cards_$:18 care_of:-18 caro:171 caro_$:102
carro_$:-33 casa:58 casa_$:51 casi:21 casi_no:22 caso:83 caso_$:76 catch:-20 chance:20 change_$:-23 changed__mind:25
changed_my:21 changes:41 changes_$:61 charge:-19 check:-23 choque:-40 church:28 cita:40 cliente:-33 cobran_$:20
cochera:21 cochera_$:21 come_in:19 coming:39 como:-152 como_no:-149 como_si:19 con:47 con__mecanico:-32 con_un:62
conmigo:23 conmigo_$:23 conozco:-82 conozco_$:-48 conviene:48 cost:-31 count:33 count_me:33 covered_$:18 creo:32
cuando:-19 cuanto_es:19 customer:-34 da:-53 day:-23 day_$:-24 day_but:-19 day_for:53 de:30 de__dos:25 de__me:37
de__no:-43 de__que:18 de__taller:-27 de__ya:26 de_aceite:24 de_eso:21 de_las:60 de_los:32 de_noche:28 de_que:-27
dealer:67 decided:63 deje:-18 dejelo:93 dejelo_asi:38 dejo:82 despues:-18 di:-19 dia:37 dia_$:23 did:-111 did_it:-35
did_that:-19 did_the:-36 dije:26 dije_que:31 dime:56 dinero_$:-33 do:58 do_$:-67 do__guys:-26 do__need:-38 do__of:65
do_any:34 do_i:-54 do_my:122 do_not:-36 do_that:22 does_it:-27 doesnt:82 doesnt_work:91 doing:38 done:-19 done_$:21
dont:27 dont__a:-35 dont__any:-19 dont__it:93 dont__me:-66 dont__you:-22 dont__your:85 dont_have:-69 dont_know:-42
dont_need:34 dont_own:-20 dont_see:-22 dont_stop:59 dont_text:-48 dont_think:88 dont_want:36 down:-100 down_$:-73
drive_$:-22 earlier:-30 early:53 early_$:58 early_for:29 either:-121 el:-37 el__es:41 el__lo:18 el__no:30
el_aceite:45 el_ano:18 el_cambio:-19 el_carro:23 el_jueves:38 el_mecanico:-25 el_sabado:-38 el_trabajo:-22
el_viernes:41 else_$:33 elsewhere:45 elsewhere_$:38 en:27 en__casa:72 en_la:52 end:-20 entiendo:-32 entran:-42 es:-28
es_$:-61 es_de:-21 es_eso:18 es_mi:-18 es_necesario:37 esa:74 esa__no:32 esa_hora:50 esas:68 esas_horas:43
escriban:-38 escriban_$:-21 ese_dia:24 eso:66 eso_$:30 eso_me:19 esos:49 esta__caro:79 esta_bien:-56 esta_muy:21
esta_semana:-21 estamos:92 este:-61 esto:-25 estoy:75 estoy_bien:116 even:35 ever:68 ever_$:69 favor:31 favor_$:41
fee:-23 feria:-55 fine:137 fine_$:57 fine__me:-35 fine_with:-27 first:-55 first_$:-26 fix:72 fix_it:57 fixed:-61
fixed_it:-26 flat_out:26 fluid_$:19 for:111 for_$:-19 for__me:-27 for__of:25 for_an:-18 for_it:-65 for_me:174
for_nothing:-19 for_now:43 for_that:108 for_the:-43 for_this:31 forget:26 forget_it:54 found:71 freno:-39 freno_$:-33
friday:26 friday_$:90 friday_instead:-23 full:18 garage:31 garage_$:21 gauge:-29 gave:36 get:-34 getting:20 go:-46
go__the:38 go_for:-24 go_to:45 going:52 going__be:-19 going__cost:-20 going__have:32 going_on:-27 going_to:77 good:47
good_$:90 good_for:-37 good_to:-18 got_a:95 got_it:-20 gracias:-25 gracias_$:-28 gracias__no:21 gracias__ya:37
gracias_pero:51 gracias_ya:22 gratis:26 gusta:22 gusto:-22 guy:80 guy_$:47 guys_$:-38 guys_do:-20 hablan:-21 hace:-52
hace_falta:29 hace_un:-22 had:-31 had__done:26 hago:50 hago_$:59 handled:-21 happy:-48 hard:42 has:-18 hasta:-27
have:32 have__a:20 have__owner:21 have__say:27 have_a:-32 have_an:49 have_got:19 have_it:-47 have_never:-23
have_no:-37 have_someone:60 have_time:-23 have_to:24 hay:-53 hay_problema:-23 here:-35 hijo:34 him:-27 hora:28
hora_no:18 horas:55 hot:-30 hours:24 how:40 how__is:53 how__was:24 how__would:18 how_about:-25 how_long:-22 hoy:23
hoy_$:23 i:-27 i__a:44 i__do:38 i__got:32 i__have:-23 i__my:47 i__never:33 i__no:-29 i__on:25 i__that:-22 i__this:-19
i_can:23 i_do:68 i_dont:-52 i_get:-18 i_go:42 i_got:54 i_had:-25 i_just:29 i_like:27 i_need:-97 i_said:-25
i_think:-20 i_want:-63 i_will:52 id:53 id__not:38 id__talk:-32 id_like:18 id_rather:21 idea:-89 if:78 if_i:-35
if_you:-19 igual_$:-26 ill:60 ill__it:76 ill__there:-34 ill__you:-18 ill_be:-28 ill_let:18 ill_pass:60 ill_take:73
im:159 im__a:-19 im__for:19 im__it:25 im__of:-33 im__the:-64 im_all:29 im_good:240 im_not:-101 im_out:-28
imposible:50 in_$:-21 in__day:66 in__garage:24 in__so:21 in_law:19 in_the:85 instead:-18 instead_$:-26 interesa:-43
interesa_$:-51 interested:21 into:55 ir:-25 is:-33 is_$:48 is__a:-68 is__going:-43 is__how:67 is__no:36 is__so:19
is_a:83 is_fine:66 is_good:-58 is_my:18 is_not:-59 is_ok:22 is_that:-32 is_there:-49 is_too:106 is_when:22 isnt:28
it:60 it_$:-25 it__a:32 it__me:-30 it__no:27 it__this:48 it__to:-72 it_and:25 it_but:38 it_done:27 it_for:-40
it_going:-27 it_is:71 it_myself:49 it_on:31 it_so:19 it_take:-25 it_wont:-42 job:-20 jueves:27 jueves_$:-18 just:46
k:-24 keep:51 know:-76 know_$:-19 know_you:-25 la:57 la__de:-31 la__no:-48 la__y:24 la_bateria:-19 la_casa:58
la_cochera:21 la_luz:-26 la_pena:50 la_puerta:18 las:65 las_$:-38 las__el:29 las_llantas:45 las_puedo:19 last_year:21
late:36 late__me:19 law:19 le:33 le__el:42 le__que:25 le_cambio:45 le_falta:-38 le_voy:22 leave:104 leave__alone:-21
leave_it:122 leave_me:-43 lejos:37 let_me:-41 like:22 like_it:-20 like_to:18 live:25 llantas:41 llantas_$:38
lleve:-32 llevo:50 lo:56 lo__asi:21 lo__con:41 lo__mi:-32 lo__y:-23 lo__ya:-30 lo__yo:48 lo_arreglo:52 lo_choque:-39
lo_hago:64 lo_hizo:-22 lo_lleve:-31 lo_llevo:40 lo_necesito:-35 lo_que:32 lo_voy:33 loco:113 lol:40 lol_$:35 long:-30
longer:-62 longer__it:-41 longer__the:-24 longer_have:-30 looking:-26 looks:18 los__me:36 los_cambios:-38
los_conozco:-36 los_dos:26 los_frenos:-26 luz:-28 luz_de:-26 make_it:-21 mal:-31 mal_$:-22 manana:-22 mandando:40
mandando_$:54 manden:-35 manden_mas:-18 manden_mensajes:34 manden_nada:-32 mandenme:33 manejo:-27 many:-30 marcha:-54
marcha_$:-50 martes:-19 mas:-80 mas_$:-58 matter:-35 me_$:-83 me__de:26 me__en:-18 me__falta:21 me__la:43 me__mal:21
me__mas:-48 me__mensajes:36 me__muy:-19 me__nada:-89 me__the:34 me_about:136 me_acomoda:29 me_again:-19 me_back:-19
me_but:23 me_cobraron:22 me_conviene:39 me_es:21 me_gusta:22 me_in:-29 me_interesa:-47 me_lo:42 me_off:-20 me_out:31
me_queda:62 me_rayaron:19 me_sale:-32 me_sirve:49 me_sirven:18 me_so:-23 meant:-18 mecanico:38 mecanico_$:50 mejor:85
mejor_me:18 mejor_no:28 mensajes_$:-52 mes:-18 mi:18 mi__es:50 mi__me:23 mi_hijo:34 mi_mecanico:21 mi_numero:-18
mi_primo:-18 mil:-31 mil_gracias:-26 miles_$:-21 mismo:21 momento:-89 momento_no:-56 monday:-32 mondays:61 money:18
money_$:23 more:-142 more_$:-97 mornings:-29 much:-20 much_$:-30 much__it:28 much_is:-18 much_would:21 muchas:-19
muchas_gracias:-19 muy:221 muy_amable:-26 muy_caro:83 muy_temprano:122 my:97 my__is:-20 my__oil:42 my__says:52
my_boss:-19 my_car:-39 my_mind:30 my_name:-20 my_number:36 my_own:112 my_wife:32 myself:75 myself_$:72 n:266 nada:54
name:-49 nd:-34 necesario:49 necesito:-28 need:-99 need_$:35 need_a:-50 need_that:-28 need_to:-81 needed:65
needed_$:85 needing:18 neither:165 nel:90 new:-21 ni:250 ni_el:50 ni_la:31 nice:103 ningun:-51 ninguna:89 ninguno:69
ninguno__los:38 ninguno_de:41 no:115 no_$:308 no__ahora:-41 no__at:-53 no__bien:-35 no__cita:42 no__cliente:-23
no__conmigo:21 no__conozco:-47 no__de:-18 no__dont:24 no__el:-51 no__en:-52 no__good:35 no__gracias:33 no__hace:21
no__hago:-33 no__have:-24 no__here:-71 no__i:42 no__interesa:62 no__is:169 no__it:26 no__los:-22 no__mas:-21
no__me:42 no__mensajes:-30 no__ningun:-62 no__no:27 no__para:-30 no__preocupe:20 no__problema:-30 no__que:-21
no__quien:-22 no__recibir:-54 no__tengo:24 no__the:42 no__them:20 no__tiempo:-21 no__to:-22 no__voy:70 no__was:29
no__what:26 no__y:35 no__ya:21 no__yo:-56 no__you:128 no_agarra:-22 no_and:91 no_but:63 no_conozco:-31 no_creo:32
no_es:-110 no_esta:-36 no_gracias:221 no_hay:-66 no_i:118 no_idea:-59 no_im:43 no_it:18 no_just:35 no_keep:33
no_le:46 no_lo:35 no_longer:-62 no_los:-19 no_manden:-25 no_mas:-31 no_me:-56 no_more:-150 no_my:35 no_need:72
no_not:-81 no_ocupo:31 no_one:-79 no_para:18 no_pero:23 no_por:22 no_puedo:71 no_quiere:-19 no_quiero:-28 no_se:-77
no_si:53 no_sigan:25 no_soy:-191 no_tengo:-84 no_thank:60 no_thanks:167 no_that:42 no_tiene:-39 no_traigo:-51
no_va:24 no_veo:-19 no_voy:30 no_way:51 no_what:96 no_worries:-95 no_y:21 no_ya:82 no_you:24 noche:19 noche_$:19
noise:-22 noise__all:-20 noise_at:-20 noises:34 nomas:42 none:129 none__them:34 none__those:30 none_of:76 nop:63
nop_$:49 nos_vemos:-24 not:-78 not_$:-31 not__at:31 not__car:-42 not__customer:-33 not__it:75 not__me:31 not__now:-56
not__the:48 not__this:-28 not__to:93 not__yet:-37 not__you:-20 not_a:-59 not_at:50 not_coming:26 not_doing:40
not_for:48 not_friday:22 not_going:74 not_happy:-41 not_interested:83 not_my:-55 not_right:-76 not_sure:-41
not_the:-65 not_today:-43 not_yet:-125 nothing:20 nothing_$:-25 now:-108 now_$:-150 now__me:-34 number_$:18
numero:-45 o:23 october:-26 october_$:-25 of:-27 of_it:-20 of_them:19 of_those:29 of_town:-24 of_you:-23 off:-26
off_$:-52 off_for:18 oil:40 oil_changes:43 ok_$:100 on_$:-31 on__now:-24 on_my:-28 on_that:48 on_this:54
one__those:24 one_of:28 only:86 only__me:54 opcion_$:-20 option:-28 or:-21 or_anything:28 otro_$:-23 otro_dia:48
our:18 out__town:-24 out_of:-37 over_$:-31 overcharged:21 own:60 own_oil:42 owner:-33 para:72 para__lo:-35
para_el:-58 parts:-22 pasa:-34 pasa_si:-28 pass:178 pass_$:99 passed:-39 paying:18 pena:60 people:-36 perdon:-30
perdon_$:-22 pero:96 pero_no:44 pero_ya:28 person:-18 persona:-28 please:-31 please_$:-24 point:25 por:-110
por__no:-131 por__que:20 por_ahora:-67 por_favor:35 por_que:-123 precio:-20 prefiero:42 prende:-40 prende_$:-22
preocupe:20 price:-57 prices:59 primo:-19 problem:-53 problem_$:-50 problema:-36 puedo:22 puedo_$:53 puedo_el:28
puerta:18 put:-58 put__in:-32 put_me:-20 que:-64 que_$:26 que__eso:19 que__le:-18 que__lo:19 que__si:-28 que__ya:18
que_cobran:26 que_es:-25 que_le:-20 que_lo:-23 que_no:-29 que_pasa:-28 que_si:27 que_va:49 queda:78 queda_$:53
quedo:-36 quien:22 quien_es:-26 quien_me:40 quienes:-29 quienes_son:-29 quiero:-51 quiero_cita:32 quiero_recibir:-53
quit:19 quit_sending:25 quiten:18 rather:31 rather__to:-33 rather_not:37 rather_talk:-37 rato:26 rayaron:19 reach:-18
ready:-39 ready_$:-37 recibir:-69 recojo:23 reminders:56 reminders_$:60 replaced:-31 ride:-18 right:64 right_$:218
right_now:-131 road:-18 runs:20 sabado:-50 sabado_$:-38 said_no:-21 sale:-32 sale_$:-23 saturday:26 saturday_$:32
say_no:-27 says:48 se:-125 se__que:-22 se_lo:-29 se_preocupe:20 second:-23 second_$:-42 see:-47 semana:-18
semana_$:-23 send:-25 send_me:-26 sending:33 sending_me:29 senor:24 ser:18 ser_$:21 servicio_$:-19 set:144 set_$:102
shop:-56 shop_$:-24 si:-140 si_$:-50 si__lo:-24 si__no:-67 si_me:19 si_no:-42 si_ya:-33 sigan:38 sigan_mandando:30
sign:-18 siguen:19 simon:-18 since:20 sir:24 sir_$:24 sirven:20 sit:22 skip:52 skip_it:23 so:126 so_$:27 so_much:-27
so_no:118 sold:-86 solo:71 someone:53 somewhere:46 son:-34 son_$:-21 soon:34 sorry:62 sorry_$:81 sorry__is:-25
sounds:-23 sounds_good:-28 soy:-195 soy__persona:-34 soy_cliente:-24 soy_el:-27 soy_esa:-21 soy_yo:-52 squeak:52
st:-31 st_$:-30 stay:18 still:-32 stop:-27 stop_$:-82 stop__me:66 stop__the:58 stuff:33 su:37 super:-25 swapped:-24
take:29 take__off:-36 take_me:-35 take_my:100 talk:-45 talk_to:-39 taller:-37 tan:-18 tarde:37 tell:-19 temprano:65
temprano_$:50 tengo:27 tengo_carro:-23 tengo_tiempo:-21 text__about:69 texting:25 texting_$:-42 texting_me:53
texts:-35 texts_$:-36 th:-37 th_$:-20 thank:36 thank_you:40 thanks:-45 thanks_$:-61 thanks__nothing:-19 thanks_but:69
thanks_for:-72 that__a:21 that__when:19 that__you:26 that_day:-23 that_in:-20 that_is:52 that_name:-29 that_one:22
that_would:-30 the__for:136 the__is:65 the__of:-25 the__time:-18 the__went:30 the_car:66 the_day:59 the_dealer:62
the_earlier:-21 the_garage:25 the_owner:-32 the_th:-36 the_tire:39 the_tires:25 the_wheels:19 the_wiper:27
the_work:-31 them_$:38 then_$:39 there:-81 there__no:-36 there_a:-44 there_is:-44 theyre:19 thing:21 thing_$:30
think:-70 think__it:-83 think_about:-61 thinking:29 this_is:-47 this_number:-22 this_one:42 this_time:49
this_week:-38 those:67 though:34 thought:24 three:48 three_$:40 through:-35 thumbsup:-34 thumbsup_$:-34 thursday:34
thursday_$:23 thursday__work:53 thursday_at:-24 tiempo:-25 tiene:-40 tienen:38 time_$:44 times_$:22 tires_$:19 to:-71
to__a:-21 to__in:31 to__it:66 to__me:-22 to__no:46 to__to:18 to_be:-30 to_cost:-20 to_do:41 to_fix:24 to_have:31
to_know:-18 to_say:62 to_stop:-23 to_that:-61 to_the:27 todavia:-44 todavia_no:-42 today:-41 today_$:-41 todos:20
too:246 too_$:-42 too__for:133 too_early:112 too_late:58 took:-25 took__of:-22 took_care:-19 top:34 town:-30
town_$:-24 trabajando:27 traigo:-57 trip:-18 try:133 tu:21 turn:-20 un:41 under:-28 up:-54 up_$:-32 uphill:-18 use:21
ustedes:-54 ustedes_$:-45 va:74 va_$:41 va_en:21 vale:53 van:-21 ve:22 vehicle:-31 vemos:-26 vemos_$:-24 vendi:-23
vez:23 viernes:25 viernes_$:37 voy:26 voy_$:-45 voy_a:66 want:-42 want_it:53 was_it:18 was_the:26 way:56 we:96
we__the:24 we_dont:-29 we_have:69 we_will:91 week:-52 week_$:-51 went_away:32 were:118 what:41 what__it:40 wheel:-22
when:60 when_i:-27 while:-32 who:54 who__are:-29 who__this:29 who__you:54 who_is:22 who_you:-46 whole:20 why:-53
why_not:-77 why_would:19 wife:26 wife_says:41 will:28 will__be:47 will__it:23 will_do:-45 will_it:-30 wiper:26
wipers:38 with:-28 with_me:-28 with_the:39 wont:47 wont__over:-28 wont_be:76 wont_go:-32 wont_work:54 work:49
work__me:38 works:-29 works_$:-41 worries:-95 worth:147 would_be:-39 would_it:25 wrong:-27 y__no:-29 y_que:30
y_ya:-22 ya:-44 ya__de:32 ya__gracias:37 ya__hace:-34 ya__lleve:-31 ya__lo:-35 ya__quiero:-31 ya_lo:-53 ya_no:-46
ya_quedo:-19 ya_tengo:73 yeah_$:-158 year:34 year_$:30 yep:-40 yep_$:-20 yes:-137 yes_$:-70 yet:-168 yet_$:-137
yo:124 yo_$:-52 yo__le:49 yo__soy:-49 yo__tengo:-18 yo_mismo:22 yo_ni:-48 yo_no:-91 you:-66 you_$:-44 you__do:-24
you__it:-45 you__my:26 you_are:-26 you_can:42 you_my:60 you_think:-40 you_to:-20 your:34 your__have:-28 your__is:-18
your_shop:-26 yours:-25 zero:70
"""
