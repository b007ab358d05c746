"""What speaks for and against `decline`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "decline"
BIAS = -139
WEIGHTS = """\
#abad:-30 #aben:23 #abin:29 #abla:-46 #able:-52 #abou:93 #acci:-29 #aced:-38 #acei:62 #acer:42 #acha:22 #acia:-52
#acom:25 #actu:41 #ador:34 #afir:-26 #afte:42 #agai:23 #agar:-60 #agen:-41 #agra:26 #agua:-37 #ahea:-22 #ahor:-190
#aigo:-74 #aile:22 #ains:57 #aint:24 #aken:-22 #aler:69 #algu:38 #alir:-24 #alke:37 #alle:-44 #allo:26 #alls:111
#alri:22 #also:47 #alta:-38 #amab:-53 #amos:128 #anag:30 #anan:-27 #anca:-28 #ance:83 #anda:89 #ando:-32 #ands:-29
#anej:-53 #ange:28 #anic:68 #anks:-77 #anne:-24 #anot:-29 #answ:46 #ante:-39 #anym:-37 #anyw:116 #apen:27 #aper:46
#appo:43 #appr:30 #appy:-48 #aqui:-196 #arag:49 #arca:-33 #arch:-79 #arde:31 #ardl:28 #arel:23 #arge:-34 #aria:-30
#ario:49 #arli:-41 #arlo:32 #arly:64 #arra:-88 #arro:22 #asad:39 #asia:22 #aske:-24 #asse:-50 #aste:127 #athe:35
#atis:26 #ativ:159 #atte:-52 #atur:37 #auge:-37 #aunq:28 #avia:-43 #avor:38 #away:33 #ayer:-41 #back:24 #bado:-29
#bajo:-31 #bare:23 #beat:25 #been:-45 #beer:25 #befo:-46 #bien:94 #bios:-46 #blan:-38 #blem:-90 #bles:-36 #bloo:30
#book:-27 #both:-49 #boug:-24 #bout:90 #brak:-27 #brea:-25 #brin:-41 #bsup:-39 #buen:-50 #busy:-48 #bvio:-22 #cabi:29
#caen:22 #call:48 #came:-34 #cand:-50 #cani:55 #cant:118 #card:32 #caro:216 #carr:37 #cars:40 #casa:77 #caso:99
#catc:-22 #ccid:-26 #ceit:62 #cesa:58 #cesi:-28 #cess:32 #chan:132 #char:-41 #chea:48 #cher:31 #choq:-40 #chur:26
#cias:-48 #ciat:33 #cibi:-94 #cide:54 #cido:60 #cita:53 #clie:-47 #clin:24 #coch:32 #comi:34 #como:-139 #comp:52
#conm:29 #cono:-56 #cont:-53 #conv:66 #cool:-26 #corr:-30 #cost:-63 #coun:34 #cove:27 #cran:-28 #crat:38 #creo:53
#crib:-69 #ctio:-23 #ctob:-27 #ctua:48 #cual:-31 #cupe:56 #cupo:36 #curi:61 #cust:-44 #dale:-28 #dand:73 #davi:-36
#days:103 #ddle:-28 #deal:56 #deci:109 #deja:106 #deje:94 #dejo:95 #delo:56 #dema:36 #deme:-25 #denm:35 #dent:-43
#ders:75 #dese:31 #desp:-23 #dial:41 #dias:23 #diga:-27 #dime:65 #ding:120 #dist:-24 #dled:-28 #dles:33 #does:74
#dogs:24 #doin:81 #done:-30 #dont:55 #door:-22 #doub:-117 #dson:-26 #dude:-64 #dule:-24 #eady:-28 #eaks:24 #eale:68
#eape:48 #eate:27 #eave:167 #ecal:96 #ecan:55 #eces:63 #ecia:26 #ecib:-97 #ecid:96 #ecti:-23 #edan:-23 #eded:64
#edes:-46 #edin:32 #edne:22 #edul:-24 #eede:64 #eedi:32 #eeke:-22 #eepi:30 #efie:58 #efor:-46 #egat:195 #egla:-44
#eglo:53 #ehic:-30 #eite:62 #eith:36 #ejal:50 #ejar:37 #ejel:102 #ejen:25 #ejor:87 #ejos:62 #eken:-22 #elli:41
#ello:28 #eloc:-23 #else:85 #elvo:29 #eman:-27 #emas:35 #emin:80 #emos:-45 #empo:-26 #empr:117 #ench:45 #ende:-79
#endo:-43 #enen:43 #enes:-33 #engo:54 #enin:29 #enlo:38 #enme:-23 #ensi:73 #ente:-65 #enti:-42 #ento:-102 #entr:-53
#eocu:47 #eone:54 #eopl:-37 #ephe:23 #epin:30 #epla:-29 #eras:-36 #erdo:-32 #eren:-30 #eres:60 #eria:-49 #erio:-26
#erra:37 #erro:25 #erse:-39 #erso:-61 #erta:45 #ervi:23 #esar:56 #esas:69 #escr:-62 #esit:-38 #esnt:103 #esos:51
#esse:-36 #este:-81 #esto:36 #even:36 #ever:38 #eves:40 #ewhe:100 #exac:-33 #exis:-28 #expe:73 #exte:-72 #exti:39
#exto:-25 #exts:-47 #falt:-38 #favo:38 #feel:-30 #feri:-72 #fert:27 #fier:59 #filt:58 #fine:157 #fini:-23 #firm:-40
#firs:-51 #fixe:-75 #flus:62 #fore:-37 #forg:59 #foun:82 #fren:-95 #frid:38 #fter:42 #full:44 #gain:23 #gall:35
#galo:27 #gara:56 #garr:-59 #gast:34 #gati:195 #gaug:-37 #gave:43 #gend:-40 #ging:-22 #givi:27 #glar:-42 #goin:50
#good:60 #grac:-50 #grad:26 #gran:-27 #gual:-29 #guan:-36 #guna:112 #guno:116 #habl:-55 #hace:-38 #haga:61 #hago:75
#hake:22 #hanc:108 #hand:24 #hard:92 #harg:-35 #have:26 #head:-22 #heap:59 #heat:-49 #hedu:-24 #hera:31 #here:-42
#hich:-35 #hicl:-28 #hijo:37 #hile:-50 #hing:51 #hink:-71 #hist:24 #hizo:-26 #hoqu:-40 #hori:-105 #horr:27 #hose:85
#hosp:-24 #houg:78 #hour:34 #hout:35 #hree:67 #hrou:-34 #humb:96 #hurc:26 #hurs:22 #iado:22 #iaja:-22 #iate:33
#iban:-50 #ibir:-103 #ible:26 #ices:75 #icey:44 #icle:-28 #iday:34 #idea:-98 #ided:89 #iden:-34 #iend:-64 #ient:-34
#iern:22 #ierr:36 #igan:73 #igua:-29 #ilte:40 #imer:-27 #imon:-27 #impo:52 #inda:-33 #inde:60 #ingu:149 #inki:29
#inst:35 #inte:36 #intm:47 #into:68 #invi:28 #ione:-26 #iosi:43 #iper:72 #ires:38 #irma:-39 #irst:-51 #irve:42
#ises:29 #isim:-25 #ismo:37 #isnt:33 #itar:23 #ithe:33 #itho:41 #ixed:-75 #jaja:49 #jalo:47 #jaro:54 #jelo:102
#jenl:32 #juev:39 #just:66 #keep:87 #kend:-22 #kind:-22 #know:-80 #lace:-37 #lado:-22 #laro:-62 #ldnt:-26 #leas:27
#leav:169 #leep:28 #lejo:52 #lema:-44 #less:52 #lest:-22 #lets:37 #leve:-37 #levo:57 #lgui:22 #lien:-60 #lier:-40
#ligh:-22 #like:24 #lind:-35 #ling:25 #list:27 #live:41 #lked:38 #llan:51 #lleg:-39 #ller:-47 #llin:47 #llos:23
#loca:29 #loci:-23 #loco:140 #long:-141 #lood:29 #look:-45 #lrig:22 #lsew:51 #ltas:25 #lter:22 #lune:-27 #lush:62
#lvid:52 #mabl:-53 #made:-24 #mana:-26 #mand:53 #mane:-56 #mano:34 #many:-34 #marc:-132 #mari:-31 #masi:22 #mati:-44
#matt:-39 #mber:-40 #mbre:54 #mbsu:-39 #meca:55 #mejo:87 #ment:-81 #meon:54 #mero:-88 #mewh:49 #migo:25 #mind:90
#mism:30 #moda:25 #mole:-22 #mome:-134 #mond:25 #mone:28 #more:-238 #morn:-60 #moto:-25 #mpan:33 #mpos:47 #mpra:84
#much:-72 #muer:38 #myse:96 #nada:43 #nage:30 #name:-119 #nces:83 #nche:32 #ndan:89 #nday:28 #ndem:-38 #nder:58
#ndin:86 #ndso:-26 #nece:62 #nega:189 #neit:193 #neja:-22 #nejo:-29 #nero:-31 #nesd:22 #nger:-74 #nges:47 #ngin:-25
#ngun:149 #nice:117 #nico:52 #nigh:-26 #ning:164 #nles:45 #nlos:36 #nmig:29 #noma:76 #nomb:92 #none:288 #noth:27
#nozc:-119 #nque:24 #nsar:-25 #nswe:46 #ntac:-29 #ntas:54 #nter:43 #ntes:-63 #ntie:-25 #ntme:47 #ntra:-56 #numb:-25
#nume:-51 #nunc:-26 #nvie:63 #nymo:-37 #nywa:118 #ober:-49 #oble:-95 #obra:25 #obvi:-22 #ocid:37 #octo:-22 #ocup:87
#odav:-36 #oday:-54 #odos:37 #oesn:103 #ofer:26 #oing:132 #oint:67 #okin:-24 #oles:-37 #olvi:46 #omas:83 #ombe:39
#ombr:61 #omen:-135 #omeo:54 #omer:-47 #omew:49 #omod:25 #ompa:44 #onda:36 #ones:60 #oney:27 #onfi:-23 #onge:-92
#only:126 #onmi:29 #onoc:64 #onoz:-119 #onta:-34 #onvi:46 #ooki:-32 #ople:-37 #opti:-34 #oque:-41 #oras:47 #orda:22
#orge:61 #orit:-112 #orks:-35 #orni:-53 #orre:-33 #orri:-115 #orry:87 #orta:23 #orte:-23 #orth:189 #osib:50 #osid:30
#ospi:-24 #othe:41 #othi:54 #otor:-22 #ough:22 #ould:-37 #ound:79 #ount:33 #owne:-65 #ozco:-119 #para:69 #park:-25
#part:-43 #pasa:-30 #paso:-23 #pass:172 #payi:23 #pena:92 #pend:57 #peni:28 #pens:58 #peop:-37 #perd:-31 #pero:140
#phil:-23 #plac:-34 #plea:-32 #poin:69 #poke:32 #posi:49 #pped:-46 #ppen:34 #ppoi:43 #ppre:33 #pran:89 #pref:48
#pren:-57 #preo:47 #pres:-67 #pric:60 #prim:-38 #prob:-99 #ptio:-34 #pues:-41 #putt:72 #quea:80 #qued:27 #quem:-23
#quie:-87 #quit:71 #raci:-49 #rage:49 #raig:-65 #rake:-27 #ranc:-43 #rand:-49 #rano:73 #ratc:38 #rath:40 #rato:34
#rcan:-47 #rcha:-56 #rdar:32 #rday:27 #rdly:28 #rdon:-22 #reac:-22 #reak:-22 #reca:98 #reci:-83 #reco:34 #rect:-35
#refi:58 #rely:29 #remi:73 #renc:31 #rend:-57 #reno:-73 #reoc:47 #repl:-50 #resa:-60 #ress:-31 #rest:47 #rget:61
#riba:-51 #rice:55 #rich:30 #rida:34 #ries:-122 #righ:96 #rime:-27 #ring:-62 #rios:54 #rita:-104 #rito:32 #rlie:-41
#rmat:-34 #rnin:-51 #road:-25 #robl:-104 #rong:-36 #roug:-50 #roun:36 #rque:-37 #rrec:-34 #rrie:-132 #rsda:37
#rson:-61 #rtan:24 #rtes:-22 #ruck:-23 #ruid:-35 #runs:24 #rven:31 #saba:-30 #sabe:24 #sada:28 #sali:-52 #sari:50
#sary:32 #satu:34 #says:45 #sche:-24 #scri:-65 #sday:29 #seas:-34 #self:96 #sell:53 #sema:-28 #serv:22 #sewh:51
#ship:23 #shop:-65 #sibl:35 #sida:38 #siem:41 #sien:35 #siga:85 #sign:-38 #sima:-29 #simo:-31 #sirv:35 #sito:-38
#sits:27 #sive:77 #sked:-24 #skip:94 #slee:28 #sold:-113 #solo:95 #some:64 #sona:-43 #soon:32 #sorr:81 #soun:-37
#spen:72 #spit:-23 #spok:38 #sque:78 #ssar:32 #ssed:-81 #stam:103 #stan:-35 #sted:-26 #stil:-29 #stom:-44 #stop:-59
#stoy:105 #stri:23 #stuf:67 #supe:-27 #suyo:-33 #swap:-24 #swer:46 #take:29 #tall:-63 #tamo:114 #tand:-61 #tard:39
#taro:26 #tede:-46 #tell:-47 #temp:71 #tend:-24 #teng:56 #tere:55 #text:-116 #that:29 #thos:74 #thou:99 #thre:61
#thro:-36 #thum:94 #thur:22 #tiem:-24 #tien:-49 #tier:35 #till:-39 #time:39 #ting:103 #tion:-60 #tira:-32 #tire:68
#tive:99 #tivo:57 #tmen:47 #tobe:-27 #toda:-81 #tome:-43 #took:-41 #town:-40 #trai:-56 #tran:-33 #tres:27 #truc:-23
#tter:-75 #ttin:72 #tual:45 #tues:-50 #tuff:67 #turb:-24 #turd:34 #turn:-39 #uall:37 #ucha:-26 #ueak:86 #ueda:69
#uena:-27 #uere:50 #uesd:-29 #ueve:37 #uier:-68 #uldn:-26 #umbe:-26 #umbs:96 #umer:-51 #unch:-25 #unds:-31 #unes:-27
#unle:45 #unqu:25 #uper:-28 #uphi:-23 #uras:24 #urch:24 #urda:34 #urio:60 #ursd:37 #usca:-23 #usta:39 #uste:-53
#usto:-78 #utti:69 #vale:58 #vehi:-30 #velo:-23 #vemo:-28 #vera:-42 #vers:-41 #very:24 #viaj:-35 #vide:38 #vido:32
#vien:42 #vier:56 #visi:-27 #vive:-54 #vuel:25 #wapp:-30 #wedn:22 #week:-69 #were:199 #weve:33 #what:30 #when:51
#wher:112 #whic:-35 #whil:-50 #wipe:77 #wner:-55 #wont:73 #worr:-124 #wort:185 #wren:45 #wron:-36 #xact:-33 #xist:-28
#xtee:-62 #xtin:53 #xtos:-32 #year:35 #ying:37 #ymor:-37 #your:38 #ysel:96 #yway:118 #zero:89 %again_later:-145
%again_later%agree:-56 %again_later%away:-76 %again_later%bad:36 %again_later%bring:-60 %again_later%busy:-46
%again_later%call_off:38 %again_later%car:44 %again_later%do_it:-36 %again_later%doubt:39 %again_later%family:27
%again_later%message:-22 %again_later%money:-83 %again_later%on_way:130 %again_later%opening:32
%again_later%pay_day:-50 %again_later%phone:46 %again_later%place:-32 %again_later%refuse:33 %again_later%season:-22
%again_later%start_again:48 %again_later%thanks:25 %again_later%wrong_one:80 %agree:-39 %agree%away:40 %agree%bad:-29
%agree%bring:-164 %agree%call_off:45 %agree%car:105 %agree%car_part:226 %agree%doubt:-64 %agree%fails:-25
%agree%how_long:-68 %agree%leave_me:-24 %agree%lift:-39 %agree%meaning:38 %agree%message:44 %agree%money:-44
%agree%odometer:45 %agree%on_way:-26 %agree%place:62 %agree%question:209 %agree%refuse:-108 %agree%shift_it:-52
%agree%start_again:-25 %agree%thanks:143 %agree%who:57 %agree%wrong_one:96 %away:-41 %away%bring:-40 %away%busy:-28
%away%call_off:26 %away%car_part:-28 %away%do_it:96 %away%doubt:-56 %away%elsewhere:-34 %away%fails:23
%away%how_long:-27 %away%lift:-33 %away%money:43 %away%noise:40 %away%on_way:-57 %away%phone:-24 %away%place:22
%away%refuse:146 %away%staff:33 %away%thanks:52 %away%wrong_one:28 %bad:23 %bad%call_off:90 %bad%car_part:49
%bad%doubt:51 %bad%question:42 %bad%refuse:84 %bad%shift_it:25 %bring%busy:-29 %bring%call_off:-94 %bring%car_part:72
%bring%doubt:-50 %bring%elsewhere:54 %bring%family:-22 %bring%gone_car:38 %bring%leak:40 %bring%leave_me:-27
%bring%message:79 %bring%money:-22 %bring%odometer:-25 %bring%on_way:-31 %bring%question:30 %bring%refuse:34
%bring%shift_it:-50 %bring%who:24 %bring%wrong_one:23 %busy%do_it:-22 %busy%fails:25 %busy%how_long:27
%busy%question:-25 %busy%refuse:-29 %busy%staff:-31 %busy%wrong_one:43 %call_off%car_part:48 %call_off%do_it:-25
%call_off%doubt:67 %call_off%elsewhere:-28 %call_off%fails:-104 %call_off%family:57 %call_off%gone_car:40
%call_off%how_long:79 %call_off%leave_me:48 %call_off%lift:42 %call_off%message:-29 %call_off%on_way:53
%call_off%opening:80 %call_off%phone:28 %call_off%question:150 %call_off%refuse:-121 %call_off%season:-31
%call_off%staff:53 %call_off%start_again:81 %call_off%thanks:527 %call_off%who:-27 %call_off%wrong_one:125
%car%family:25 %car%gone_car:-105 %car%refuse:-133 %car%season:27 %car%start_again:23 %car%thanks:40
%car%wrong_one:-81 %car_part:-65 %car_part%doubt:-34 %car_part%elsewhere:-47 %car_part%fails:-59
%car_part%gone_car:-28 %car_part%how_long:-34 %car_part%leak:-38 %car_part%leave_me:191 %car_part%meaning:-43
%car_part%message:262 %car_part%money:-60 %car_part%on_way:-36 %car_part%place:-55 %car_part%question:23
%car_part%refuse:116 %car_part%shift_it:64 %car_part%smoke_smell:-56 %car_part%start_again:51 %car_part%thanks:70
%car_part%wrong_one:74 %do_it%doubt:23 %do_it%elsewhere:-137 %do_it%fails:35 %do_it%family:-124 %do_it%gone_car:-47
%do_it%leave_me:46 %do_it%message:23 %do_it%odometer:-24 %do_it%staff:-82 %do_it%start_again:43 %do_it%thanks:59
%doubt%money:35 %doubt%on_way:-41 %doubt%question:135 %doubt%refuse:149 %doubt%staff:-27 %doubt%start_again:29
%doubt%thanks:41 %doubt%wrong_one:77 %elsewhere:92 %elsewhere%family:69 %elsewhere%gone_car:24 %elsewhere%money:-48
%elsewhere%odometer:69 %elsewhere%place:-45 %elsewhere%question:-39 %elsewhere%thanks:39 %elsewhere%who:26 %fails:-99
%fails%on_way:31 %fails%place:-29 %fails%shift_it:39 %family:-29 %family%money:29 %family%noise:-23
%family%odometer:27 %family%place:23 %family%question:44 %family%refuse:64 %family%staff:108 %family%start_again:26
%family%who:-30 %gone_car:-112 %gone_car%how_long:-22 %gone_car%leave_me:22 %gone_car%odometer:70 %gone_car%on_way:48
%gone_car%question:118 %gone_car%refuse:57 %gone_car%thanks:87 %gone_car%who:109 %gone_car%wrong_one:71
%how_long%on_way:25 %how_long%opening:46 %how_long%refuse:64 %leak%wrong_one:30 %leave_me%message:65
%leave_me%money:-36 %leave_me%question:-22 %leave_me%refuse:63 %leave_me%shift_it:34 %leave_me%start_again:-49
%leave_me%wrong_one:69 %lift:-49 %machine:-45 %machine%staff:-30 %meaning:-46 %meaning%phone:-25
%meaning%question:-27 %message%question:-34 %message%refuse:-158 %message%start_again:-97 %message%wrong_one:-67
%money:46 %money%on_way:63 %money%pay_day:-25 %money%refuse:157 %money%shift_it:-36 %money%staff:41
%money%start_again:-33 %money%thanks:30 %money%wrong_one:68 %noise:-67 %noise%odometer:-31 %noise%question:-31
%noise%refuse:-32 %noise%thanks:26 %odometer:45 %odometer%question:51 %odometer%refuse:36 %odometer%season:23
%odometer%staff:71 %on_way%phone:24 %on_way%place:-53 %on_way%refuse:114 %on_way%shift_it:49 %on_way%start_again:63
%on_way%thanks:-28 %on_way%wrong_one:30 %opening%question:32 %opening%refuse:78 %pay_day:-69 %pay_day%refuse:-29
%pay_day%season:-31 %pay_day%thanks:23 %phone:-124 %phone%question:-23 %phone%shift_it:-41 %phone%staff:-45
%phone%who:26 %phone%wrong_one:-26 %place%refuse:43 %question:-138 %question%refuse:22 %question%staff:54
%question%start_again:39 %question%thanks:144 %question%who:74 %question%wrong_one:75 %refuse:349 %refuse%season:-47
%refuse%shift_it:-26 %refuse%start_again:22 %refuse%who:-55 %refuse%wrong_one:-88 %season:-77 %shift_it:69
%shift_it%start_again:52 %shift_it%thanks:38 %smoke_smell:-56 %staff:41 %staff%thanks:23 %staff%who:28
%staff%wrong_one:55 %start_again:-24 %start_again%wrong_one:73 %thanks%who:47 %thanks%wrong_one:77 %who%wrong_one:27
%wrong_one:-104 @?:-115 @after_visit:-417 @car:-44 @confirm:-496 @confirm_stop:147 @later:-189 @nothing:-261
@odometer:-71 @offers:89 @offers_:-61 @reading:-49 @times:-237 @walk_in:28 ^_$:-83 ^_a:87 ^_actually:29 ^_ahora:-56
^_ahorita:-48 ^_any:-115 ^_anything:38 ^_appreciate:60 ^_aqui:-104 ^_are:-23 ^_as:156 ^_asi:192 ^_both:-84 ^_call:-27
^_can:-75 ^_cant:120 ^_cars:23 ^_como:-192 ^_correcto:-22 ^_cost:-25 ^_count:48 ^_cuanto:-36 ^_dale:-24 ^_de:-86
^_dejelo:26 ^_did:-42 ^_do:-151 ^_does:-32 ^_dont:66 ^_either:-188 ^_estoy:24 ^_fine:-33 ^_forget:34 ^_found:61
^_go:-26 ^_going:110 ^_good:-49 ^_gracias:-201 ^_had:-29 ^_hard:49 ^_how:-73 ^_i:27 ^_id:60 ^_if:-24 ^_ill:27
^_imposible:29 ^_is:-124 ^_it:-89 ^_just:-27 ^_la:-74 ^_last:-45 ^_leave:100 ^_let:-32 ^_lets:43 ^_lo:-88 ^_lol:-24
^_me:-197 ^_mejor:119 ^_mi:35 ^_mil:-50 ^_muchas:-29 ^_muy:162 ^_my:-49 ^_nada:24 ^_nah:43 ^_nd:-37 ^_need:-30
^_negative:114 ^_negativo:81 ^_neither:198 ^_nel:140 ^_never:28 ^_ni:291 ^_nice:164 ^_ninguna:103 ^_ninguno:90
^_no:250 ^_nombre:75 ^_none:160 ^_nop:66 ^_not:126 ^_nothing:104 ^_nunca:-28 ^_ok:-148 ^_on:27 ^_only:84 ^_option:-26
^_para:143 ^_paso:55 ^_pass:62 ^_por:-166 ^_prefiero:47 ^_puedo:-47 ^_put:-28 ^_que:-49 ^_quiero:-24 ^_quit:35
^_scratch:22 ^_se:-70 ^_si:-210 ^_simon:-27 ^_skip:51 ^_solo:37 ^_someone:-31 ^_sounds:-27 ^_st:-35 ^_sure:74
^_tengo:100 ^_thanks:-265 ^_that:121 ^_the:-25 ^_there:-72 ^_those:-27 ^_thumbsup:-39 ^_thursday:58 ^_todavia:-51
^_too:214 ^_we:140 ^_were:200 ^_what:-148 ^_why:-51 ^_will:-67 ^_wont:38 ^_works:-47 ^_y:-60 ^_ya:-87 ^_yeah:145
^_yep:-55 ^_yes:-107 ^_yo:100 ^_you:-66 ^_your:-71 ^_zero:46 a:69 a__hora:49 a__horas:33 a__que:36 a__time:-55
a_customer:-31 a_esa:58 a_esas:34 a_fee:-26 a_good:-81 a_guy:120 a_hacer:47 a_la:-41 a_las:-25 a_los:26 a_mechanic:31
a_no:28 a_ser:25 about:95 about__tires:56 about_it:-98 about_oil:41 about_the:55 accident:-26 aceite:62 aceite_$:52
acomoda:26 actually:37 after:50 after_all:29 after_the:27 again:-27 again_$:-46 against:50 agarra:-38 agarran:-23
agendeme:-38 agendeme_$:-38 aguanta:-28 aguanta_$:-25 ahead:-22 ahi_$:74 ahi_nos:-24 ahi_paso:-40 ahi_voy:-37
ahora:-97 ahora_$:-59 ahora_no:-89 ahorita:-101 ahorita_$:-45 ahorita_no:-52 aint:39 al:55 alguien:22 alguien_que:28
all:152 all__them:-34 all_day:-53 all_good:33 all_of:-23 all_set:185 all_that:41 already_$:-29 already_did:-31
already_got:23 already_had:36 alright:30 also:47 am:-43 am_$:-27 amable:-23 amable_$:-25 amables:-30 an:28
an__change:-29 an_appointment:66 an_oil:-29 and:93 and__i:26 and__is:36 and_did:-28 and_not:23 anda:22 another:-26
answer:37 antes:-53 antes_de:-23 any:-103 any__of:-23 any__them:30 any__those:-64 any_day:-28 anymore:-37
anymore_$:-27 anything_but:45 anyway:118 anyway_$:110 apenas:27 appointment:49 appreciate:36 appreciate_the:22
aqui:-191 aqui_$:-81 aqui__vive:-54 aqui_no:-115 are:-32 are_$:-27 are_fine:-29 arreglaron:-58 arreglo:53
arreglo_mi:-23 as:188 asi:372 asi_$:37 asi__bien:68 asi__no:31 asi_es:-25 ask:-42 ask_me:-26 asked:-24 at:-75
at_all:-37 at_the:-49 aunque:25 away:33 ayer:-40 back:30 back_$:-32 barely:23 be:68 be_$:62 be__that:40 be__there:45
be_back:65 be_doing:31 be_needing:24 be_there:-29 been:-45 beer:26 before:-46 bien:107 bien_asi:49 bien_gracias:66
bien_no:48 bill:-26 blood:30 book:-41 book_it:-36 both:-110 both_are:-33 bother:62 bought:-24 bought_it:-22
brakes:-23 bring:-36 buen:-38 busy:-48 but:281 but__much:27 but__you:28 but_do:23 but_how:26 but_i:36 but_ill:41
but_monday:-28 but_no:69 but_what:36 buy:22 by:-72 by__name:-37 by_that:-37 cabin:30 cabin_filter:25 caen:22 call:-50
call_me:-44 cambio:54 cambio__aceite:50 cambio_el:60 cambios:-46 came:-25 can__it:31 can__with:22 can_i:-32
can_you:-23 cant:119 cant_do:174 cant_make:27 cant_say:-64 car_$:-36 car_is:94 care__it:-23 caro:223 caro_$:132
carro_$:-31 cars:42 casa:72 casa_$:68 caso:101 caso_$:97 catch:-22 chance:22 chances:86 chances_$:86 change_$:-27
changed__mind:45 changed_my:40 changes:50 changes_$:73 charge:-25 charged:-23 cheaper:48 choque:-40 church:26 cita:50
cliente:-46 cochera:32 cochera_$:32 coming:30 como:-164 como_esta:36 como_no:-200 con:78 con__mecanico:-31
con__que:28 con_mi:-33 con_un:67 conmigo:29 conmigo_$:25 conozco:-119 conozco_$:-69 conviene:46 conviene_$:46
correct:-25 cost:-50 count:47 count__out:53 count_me:47 covered_$:24 creo:53 cuanto_es:24 curiosidad:30 customer:-42
da:-75 dale:-25 day:-24 day__me:55 day_for:53 days:48 de:31 de__dos:34 de__llantas:67 de__lo:-22 de__me:51 de__no:-64
de__que:44 de__taller:-34 de__ya:34 de_aceite:30 de_aqui:-34 de_eso:31 de_freno:-30 de_la:26 de_las:60 de_los:47
de_noche:26 de_que:-37 de_veras:-34 dealer:65 decided:89 decided_against:42 dejaron:42 dejelo:102 dejelo_asi:42
dejenlos:28 dejo:95 dejo_$:84 despues:-23 di:-29 dia_$:29 did:-151 did_it:-55 did_that:-35 did_the:-46 diga:-25
dije:24 dije_que:23 dime:65 dinero:-23 dinero_$:-34 do:97 do_$:-88 do__instead:-29 do__need:-44 do__of:79 do__own:136
do_any:43 do_friday:34 do_i:-81 do_my:136 do_not:-45 do_the:29 do_thursday:50 does:-29 does_it:-36 doesnt:103
doesnt_matter:-36 doesnt_work:119 dogs:24 doing:81 doing_it:29 done:-29 dont:55 dont__a:-28 dont__any:-33
dont__it:102 dont__me:-81 dont__the:37 dont__you:-42 dont__your:86 dont_drive:-34 dont_have:-93 dont_know:-75
dont_need:61 dont_own:-28 dont_see:-31 dont_stop:57 dont_text:-59 dont_think:102 dont_want:112 dos:24 dos_me:32
down:-122 down_$:-79 drive_$:-37 drive_it:23 driving_with:-24 dude:-64 earlier:-40 early:68 early_$:84 early_for:27
either:-152 either_$:-68 el__a:22 el__es:28 el__lo:26 el__no:24 el_aceite:55 el_carro:33 el_dia:-25 el_jueves:54
el_momento:-28 el_otro:-28 el_trabajo:-22 el_viernes:47 else:40 else_$:39 elsewhere:51 elsewhere_$:48 en:44
en__casa:83 en__garage:24 en_el:37 en_eso:28 en_la:47 en_otro:-25 end:-35 entiendo:-45 entran:-46 era:26 es:-70
es_$:-78 es__numero:-22 es_de:-37 es_eso:22 es_mecanico:65 es_mi:-37 es_necesario:49 esa:61 esa__no:30 esa_hora:50
esa_persona:-27 esas:74 esas_horas:42 escriban:-48 escriban_$:-31 ese_carro:37 ese_senor:-27 eso:108 eso_$:48
eso_de:23 esos:52 esta:-36 esta__caro:92 esta_bien:-71 esta_muy:22 estamos:105 este:-66 esto:-34 esto_$:-26 estoy:102
estoy_bien:158 even:37 ever:68 ever_$:67 existe:-28 extra:22 falta:-35 far:32 favor:39 favor_$:44 fee:-29 feria:-71
filter:40 fine:157 fine_$:79 fine__me:-52 fine_with:-42 first:-51 first_$:-27 fix:78 fix_it:68 fixed:-75 fixed_it:-27
flat_out:23 flush:59 for:95 for_$:-25 for__blood:30 for__me:-33 for_it:-90 for_me:206 for_my:28 for_nothing:-33
for_now:43 for_that:126 for_the:-40 for_this:28 forget:61 forget_it:80 found:82 freno:-55 freno_$:-43 friday:42
friday_$:109 friday_instead:-29 full:29 galon:31 garage:49 garage_$:24 gauge:-37 gauge_is:-36 gave:43 gave_you:57
get:-48 go:-56 go__it:-29 go__the:50 go_for:-33 go_to:65 going:50 going__be:-27 going__have:35 going_on:-29
going_to:84 going_uphill:-23 good:60 good_$:87 good_for:-55 good_to:-22 got:31 got__guy:121 got_a:143 got_it:-30
gracias:-48 gracias_$:-45 gracias__no:26 gracias__ya:42 gracias_pero:62 gracias_por:-27 gracias_ya:26 grandson:-26
gratis:26 gusta:33 gusto:-32 guy:114 guy_$:90 guy__it:-27 guys_$:-39 hablan:-26 hablan_$:-22 hace:-84 hace_un:-22
hacer:31 hacer_$:23 had__done:25 haga:76 hago:75 hago_$:55 handled:-28 handles:34 happen:29 happy:-47 happy_with:-30
hard:64 hard_no:49 hard_pass:22 hardly:28 have:31 have__a:23 have__no:-39 have__say:33 have_an:59 have_it:-47
have_never:-26 have_no:-44 have_someone:67 have_time:-23 hay:-74 hay_problema:-30 heat:-35 here:-46 hijo:38 him:-26
him_$:-22 hizo:-26 hora:39 horas:47 hot:-38 hours:30 how:51 how__is:58 how__was:27 how__would:24 how_about:-24
how_much:24 hoy:26 i:-31 i__a:51 i__be:41 i__do:38 i__got:32 i__have:-27 i__it:-29 i__know:-24 i__my:77 i__never:30
i__no:-42 i__see:-27 i__the:-32 i__to:-25 i__want:28 i__where:-23 i_am:-23 i_can:28 i_come:24 i_do:82 i_dont:-86
i_get:-22 i_go:47 i_got:56 i_have:47 i_like:28 i_meant:22 i_need:-116 i_never:-23 i_said:-37 i_want:-97 i_will:51
i_wont:31 id:82 id__not:41 id__talk:-41 id_rather:24 idea:-92 idea_$:-40 if:90 if_i:-53 igual_$:-28 ill:57
ill__it:112 ill__my:85 ill__there:-36 ill__you:-26 ill_be:-33 ill_let:22 ill_pass:63 ill_take:70 im:117 im__a:-28
im__of:-30 im__the:-86 im__to:24 im__with:-25 im_all:50 im_down:-79 im_driving:-22 im_fine:120 im_good:261 im_in:-27
im_not:-120 im_ready:-38 imposible:47 in:-24 in__day:65 in__garage:23 in_law:23 in_october:-25 in_the:82
instead_$:-25 interesa:-63 interesa_$:-91 interest:34 interested_$:-28 into:68 is_$:67 is__a:-74 is__bill:-26
is__going:-58 is__how:72 is__no:32 is__with:-28 is_a:67 is_fine:80 is_full:27 is_good:-64 is_not:-80 is_ok:33
is_that:-50 is_there:-51 is_too:125 isnt:33 it:98 it_$:-59 it__a:31 it__at:-22 it__dont:25 it__fine:72 it__me:-44
it__more:-38 it__this:57 it__to:-87 it_be:37 it_but:58 it_done:29 it_for:-46 it_going:-33 it_is:112 it_myself:72
it_no:-24 it_on:42 it_take:-27 it_wont:-52 jaja_$:28 jueves:40 jug:23 just:71 just_had:-24 k:-25 keep:89 keep_me:38
keep_texting:26 know:-92 know_$:-22 know_you:-42 la:107 la__de:-31 la__no:-37 la__pasada:24 la_bateria:-22 la_casa:74
la_cochera:33 la_luz:-33 la_pena:56 la_vez:24 lado_$:-24 las:36 las_$:-38 las__el:26 las_llantas:46 late:43
late__me:23 late__the:55 late_in:55 law:22 le:59 le__el:52 le_cambio:60 le_falta:-51 le_voy:38 lease:33 leave:150
leave__alone:-31 leave_it:147 leave_me:-58 lejos:52 let:-28 let_me:-60 lets:37 like:27 like_a:30 live:42 llanta:-22
llantas:54 llantas_$:40 lleva_millas:24 lleve:-37 lleve_con:-31 llevo:57 lo:58 lo__con:34 lo__mi:-29 lo__y:-25
lo__ya:-33 lo__yo:83 lo_arreglo:59 lo_choque:-40 lo_hago:94 lo_hizo:-29 lo_lleve:-36 lo_llevo:43 lo_necesito:-46
lo_que:25 lo_uso:34 lo_vendi:-26 lo_voy:36 loco:124 lol:51 lol_$:37 long:-33 longer:-91 longer__it:-49
longer__the:-32 longer_have:-41 longer_own:-36 looking:-35 looking_for:-24 los__me:40 los_cambios:-45 los_conozco:-53
los_dos:31 los_frenos:-23 low:24 lunes:-27 luz:-37 luz_de:-32 made:-24 make_it:-25 mal_$:-49 manana:-27 mandando:55
mandando_$:74 manden:-45 manden_mas:-23 manden_mensajes:39 manden_nada:-42 mandenme:36 manejo:-29 many:-34 marcha:-70
marcha_$:-64 mas:-121 mas_$:-104 matter:-37 me:-23 me_$:-125 me__falta:22 me__i:25 me__im:-24 me__la:60 me__mal:24
me__mas:-55 me__mensajes:33 me__nada:-107 me_about:156 me_acomoda:26 me_alone:-53 me_but:27 me_conviene:39
me_dejaron:41 me_escriban:-23 me_gusta:22 me_gusto:-32 me_in:-39 me_interesa:-68 me_like:25 me_llame:25 me_lo:68
me_now:48 me_off:-33 me_on:22 me_out:46 me_queda:85 me_sale:-30 me_sirve:47 me_sirven:32 me_so:-22 mecanico:58
mecanico_$:65 mejor:90 mejor_no:25 mensajes_$:-55 mero:-22 mes:-23 mi:32 mi__es:53 mi__le:27 mi__me:29 mi_carro:-22
mi_hijo:38 mi_mecanico:27 mil:-46 mil_gracias:-34 miles_$:-25 mismo:38 momento:-117 momento_no:-66 monday:-40
mondays:65 money:30 money_$:24 more:-201 more_$:-123 more_of:-27 morning:-22 mornings:-36 moved:22 much_$:-25
much__it:25 much_would:22 muere:34 muy:259 muy__gracias:-28 muy__para:25 muy_amable:-23 muy_amables:-28 muy_caro:120
muy_lejos:36 muy_temprano:133 my:106 my__back:-24 my__do:-24 my__in:29 my__is:-22 my__no:33 my__oil:46 my__says:60
my_blood:30 my_car:-35 my_chances:86 my_grandson:-26 my_mind:49 my_money:-22 my_name:-24 my_number:37 my_own:161
my_wife:38 myself:96 myself_$:96 n:292 nada:50 nada__eso:22 nah:43 name:-62 nd:-43 necesario:58 necesario_$:44
necesito:-37 necesito_$:-31 necessary:32 necessary_$:32 need:-102 need_$:50 need_a:-45 need_that:-32 need_to:-104
needed:64 needed_$:94 needing:29 negative:114 negativo:81 neither:193 neither_$:127 nel:140 nel_$:44 never_been:-23
never_mind:30 new:-40 ni:342 ni_el:40 ni_la:28 ni_lo:24 ni_loco:101 nice:123 nice__you:-22 nice_of:-22 ningun:-71
ninguna:112 ninguno:109 ninguno__los:49 ninguno_de:52 no:57 no_$:326 no__ahora:-62 no__and:-35 no__at:-58
no__bien:-58 no__cita:30 no__cliente:-37 no__como:-23 no__conmigo:24 no__conozco:-80 no__de:-46 no__dinero:-22
no__dont:45 no__el:-59 no__en:-28 no__esa:-24 no__ese:-27 no__good:37 no__gracias:30 no__gusto:-32 no__hace:23
no__hago:-36 no__have:-37 no__here:-106 no__i:59 no__interesa:83 no__is:205 no__it:29 no__last:22 no__like:22
no__los:-24 no__me:65 no__mensajes:-41 no__necesario:57 no__necesito:29 no__ningun:-76 no__otra:24 no__own:-36
no__pero:27 no__problema:-37 no__que:-38 no__quien:-31 no__quiero:27 no__recibir:-67 no__tengo:27 no__that:-57
no__the:76 no__them:26 no__to:-26 no__voy:69 no__was:27 no__what:25 no__who:25 no__y:54 no__yet:-105 no__yo:-68
no__you:135 no_agarra:-38 no_and:143 no_but:91 no_car:-42 no_conozco:-33 no_creo:57 no_dont:27 no_entiendo:-32
no_es:-148 no_esta:-52 no_existe:-28 no_gracias:287 no_hay:-77 no_i:152 no_idea:-83 no_im:47 no_it:32 no_just:32
no_keep:41 no_le:38 no_longer:-95 no_los:-36 no_manden:-23 no_mas:-54 no_me:-104 no_mi:26 no_more:-205 no_my:52
no_necesito:26 no_need:82 no_nomas:27 no_not:-91 no_ocupo:72 no_on:31 no_one:-92 no_pero:64 no_point:30 no_prende:-24
no_problem:-70 no_puedo:72 no_pues:22 no_quiere:-28 no_se:-129 no_si:38 no_sigan:28 no_sirve:-32 no_soy:-254
no_tengo:-135 no_thank:81 no_thanks:187 no_that:53 no_tiene:-29 no_to:-41 no_traigo:-65 no_vive:-54 no_vuelvo:27
no_way:51 no_what:122 no_worries:-129 no_y:38 no_ya:98 noise__all:-22 noise_at:-22 noises:29 nomas:76 nombre:50
none:185 none__them:37 none__those:43 none_of:102 nop:70 nop_$:58 nos:-24 nos_vemos:-24 not:-55 not__at:29
not__car:-47 not__customer:-41 not__it:89 not__me:39 not__now:-77 not__the:74 not__this:-31 not__to:115 not__with:-47
not__yet:-39 not__you:-26 not_a:-77 not_at:62 not_coming:27 not_doing:36 not_ever:81 not_for:58 not_friday:26
not_going:75 not_happy:-50 not_him:-26 not_in:25 not_interested:96 not_me:-100 not_monday:60 not_my:-62 not_right:-99
not_sure:-43 not_the:-80 not_to:30 not_today:-50 not_worth:104 not_yet:-159 nothing:52 nothing_$:-40 now:-133
now_$:-177 now__me:-41 now_and:24 number:-24 numero:-51 nunca_$:28 o_no:-23 october:-27 october_$:-26 ocupo:41
ocupo_$:25 of:-65 of_them:22 of_those:32 of_town:-29 of_you:-25 off:-24 off_$:-69 off_my:34 oil:59 oil_changes:51
oil_no:23 ok_$:120 ok_gracias:-31 old:27 on__now:-22 on__thought:40 on_in:-23 on_my:-44 on_second:40 on_that:64
on_this:71 only:126 only__me:62 opcion_$:-26 option:-33 or:-63 or_anything:29 or_no:-44 otro_$:-25 otro_dia:53 our:28
out__town:-28 out_of:-39 over_$:-39 over_here:80 own:87 own_$:32 own_it:-35 own_oil:46 owner:-55 para:69 para__lo:-42
para__si:24 para_el:-36 para_nada:160 para_no:-24 parts:-26 pasa:-47 pasa__no:-44 pasa_si:-38 pasada:23 paso:-23
paso_$:-29 pass:215 pass_$:102 passed:-46 pay:-26 paying:23 pena:65 people:-37 perdon:-26 pero:136 pero__es:25
pero_no:35 pero_ya:28 persona:-46 persona_$:-23 please:-31 point:27 por:-108 por__momento:-28 por__no:-154 por__y:28
por_ahora:-77 por_curiosidad:30 por_el:-22 por_favor:45 por_que:-163 por_un:26 precio:-24 prefiero:58 prefiero_no:35
prende:-54 prende_$:-35 price:-59 price_$:-23 prices:76 pricey:44 problem:-54 problem_$:-48 problema:-44 puedo_$:53
puedo__asi:-23 puedo_el:33 put:-74 put__in:-34 put_me:-24 putting:65 que:-62 que__eso:31 que__le:-22 que__llame:25
que__si:-36 que__ya:22 que_es:-31 que_lo:-36 que_me:25 que_no:-68 que_pasa:-35 que_si:36 que_taller:-23 que_va:88
queda:98 queda_$:69 queda__lejos:43 queda_muy:33 quedo:-31 quien:27 quien__lo:69 quien_es:-33 quien_me:61 quienes:-45
quienes_son:-40 quiero:-54 quiero__de:-27 quiero_cita:23 quiero_recibir:-66 quit:50 quit__me:24 quit_sending:37
quiten:29 rather:40 rather__to:-41 rather_not:45 rather_talk:-47 ready:-44 ready_$:-41 recibir:-86 reminders:79
reminders_$:83 replaced:-38 rich:30 rich__my:30 rich_for:30 right:76 right_$:262 right_now:-146 road:-24 runs:24
sabado:-29 sabado_$:-24 saben:23 said_no:-30 sale:-29 sale_$:-26 salir:-24 saturday:27 saturday_$:34 say_no:-22
says:45 scratch:24 scratch_that:23 se:-152 se__mas:-22 se__que:-35 se_me:23 se_quienes:-44 seat:-23 second_$:-50
second_thought:40 see:-53 selling:46 semana:-23 semana_$:-22 send:-34 send_me:-39 sending:44 sending_me:33 set:206
set_$:160 set_for:43 she:28 shop:-67 shop_$:-30 shop_is:-24 si:-183 si_$:-47 si__interesa:-25 si__no:-102 si_como:-31
si_gracias:-34 si_me:27 si_no:-50 si_ya:-49 siempre:41 siempre_no:37 sigan:61 sigan_mandando:43 simon:-27 sin:23
sir:40 sir_$:40 sirven:34 sit:22 sits:32 skip:98 skip_it:35 skip_the:33 so:187 so_$:26 so_im:43 so_much:-30 so_no:189
sold:-113 solo:95 someone:55 someone_$:35 somewhere:49 son:-52 son_$:-29 soon:28 sorry:81 sorry_$:86 sorry__is:-25
sounds:-30 sounds_good:-35 soy:-254 soy__persona:-47 soy_cliente:-38 soy_el:-35 soy_esa:-29 soy_la:-24 soy_yo:-65
spending:33 squeak:62 st:-37 st_$:-35 still:-29 stop:-57 stop_$:-91 stop__me:64 stop__the:70 stop_with:70 stuff:67
su:34 super:-27 suyo:-32 swapped:-30 take:36 take__back:23 take__chances:86 take__off:-43 take_it:46 take_me:-44
take_my:86 take_the:-32 talk:-52 talk_to:-40 talked:38 taller:-45 taller_$:-27 tarde:36 tell:-27 temprano:83
temprano_$:70 tengo:53 tengo__me:56 tengo_carro:-37 tengo_quien:56 tengo_un:32 text__about:89 texting:53
texting_$:-30 texting_me:62 textos:-27 texts:-47 texts_$:-48 th:-49 thank:67 thank_you:73 thanks:-63 thanks_$:-52
thanks__no:25 thanks__nothing:-33 thanks_but:80 thanks_for:-116 that:29 that__you:44 that_is:70 that_name:-37
that_old:33 that_one:26 that_wont:41 that_would:-34 the:84 the__but:28 the__change:22 the__for:164 the__is:68
the__it:22 the__of:-43 the__stuff:36 the__went:39 the_car:77 the_day:63 the_dealer:62 the_earlier:-25 the_flush:52
the_garage:27 the_oil:28 the_owner:-52 the_th:-48 the_tire:60 the_tires:58 the_way:29 the_wiper:25 the_work:-37
them_$:30 then_$:25 there:-106 there__fee:-26 there__no:-48 there_a:-42 there_is:-67 these_$:-26 these_days:35
thing_$:27 think:-94 think__it:-103 think_about:-71 think_so:57 think_this:-23 thinking:23 thinking_of:24 this_$:26
this__not:-23 this_is:-55 this_number:-26 this_one:53 this_time:65 this_week:-38 those:74 those_tires:-22 though:43
thought:35 three:67 three_$:33 through:-34 thumbsup:-39 thumbsup_$:-39 thursday:41 thursday_$:25 thursday__work:66
thursday_at:-28 tiempo:-26 tiene:-39 tienen:41 time:30 time_$:58 tire:28 tires:41 tires_$:23 to:-68 to__for:-30
to__guy:29 to__in:23 to__it:86 to__me:-49 to__no:56 to_a:-25 to_be:-50 to_church:26 to_do:53 to_fix:24 to_have:32
to_say:81 to_stop:-37 to_that:-61 to_the:74 to_your:-23 todavia:-36 todavia_no:-51 today:-54 today_$:-52 todos:26
too:321 too_$:-56 too__for:165 too_early:138 too_far:37 too_late:67 too_rich:30 took:-41 took__of:-27 took_care:-26
top:40 town:-37 town_$:-28 trabajando:25 traigo:-64 trip:-27 truck:-23 try:155 tuesday:-29 two:-26 uh:125 un:47
unless:45 unless__is:40 unless_it:40 up:-42 up_$:-39 up_in:25 up_the:26 uphill:-23 use:25 use_the:36 uso:34 uso_$:26
ustedes:-46 ustedes_$:-88 va:113 va_$:58 va_a:23 vale:59 van:-31 ve:33 vehicle:-38 vemos:-28 vemos_$:-23 vendi:-42
veras:-34 vez:23 vez_me:25 vez_pasada:24 viernes:23 viernes_$:36 vive:-54 voy:24 voy_$:-43 voy__hacer:39 voy_a:76
vueltas:25 vuelvo:29 wait:-24 want__texts:-35 want_it:78 want_your:-33 was_it:22 way:70 we:141 we__it:-25 we__the:42
we_dont:-33 we_have:91 we_sold:-45 we_will:99 wednesday:25 week:-59 week_$:-58 went_away:43 were:200 were_fine:43
were_good:29 weve:33 what:40 what__it:38 what_was:24 wheel:-34 when:56 when_i:-32 while:-47 who:62 who__are:-39
who__this:42 who__you:53 who_is:35 who_you:-61 why:-59 why_not:-84 wife:23 wife_says:44 will__be:47 will_do:-36
will_it:-31 wiper:26 wipers:53 wipers_$:47 with:-53 with_it:24 with_me:-39 with_the:32 without:41 wont:73
wont__over:-33 wont_be:113 wont_go:-37 wont_work:52 work:40 work__me:48 work_for:48 works:-35 works_$:-53
works__me:-24 worries:-129 worth:185 worth_it:81 would_be:-36 would_it:27 wrong:-36 y:31 y_$:-23 y_como:24 y_que:23
y_ya:-37 ya:-67 ya__de:35 ya__existe:-28 ya__gracias:40 ya__hace:-46 ya__lleve:-33 ya__lo:-31 ya_le:-25 ya_lo:-51
ya_no:-47 ya_tengo:90 yeah_$:-168 yeah_no:27 year:26 year_$:23 yep:-55 yep_$:-22 yes:-160 yes_$:-69 yet:-217
yet_$:-172 yo:152 yo_$:-60 yo__la:75 yo__le:63 yo__soy:-62 yo_lo:170 yo_mismo:40 yo_ni:-42 yo_no:-111 you:-22
you_$:-66 you__i:-23 you__it:-56 you__what:25 you_are:-37 you_can:61 you_know:27 you_my:65 you_think:-51 you_to:-27
your:42 your__have:-30 your__is:-28 your_shop:-38 your_texts:-31 yours:-24 yours_$:-29 zero:89
"""
