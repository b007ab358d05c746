"""What speaks for and against `decline`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "decline"
BIAS = -150
WEIGHTS = """\
#abad:-29 #abin:30 #abla:-45 #able:-49 #abou:98 #acci:-28 #aced:-41 #acei:64 #acer:43 #acia:-51 #acom:25 #actu:42
#ador:34 #afir:-25 #afte:40 #agar:-62 #agen:-43 #agra:29 #agua:-37 #ahor:-199 #aigo:-76 #ains:58 #aler:71 #algu:38
#alir:-27 #alke:37 #alle:-45 #allo:26 #alls:111 #alqu:-27 #also:46 #alta:-38 #amab:-51 #amos:131 #anag:28 #anan:-29
#anca:-31 #ance:83 #anda:87 #ando:-36 #ands:-29 #anej:-54 #ange:30 #anic:72 #anks:-73 #anot:-26 #answ:46 #ante:-36
#anym:-43 #anyw:119 #apen:27 #aper:45 #appo:42 #appr:30 #appy:-47 #aqui:-200 #arag:49 #arca:-34 #arch:-79 #arde:29
#ardl:28 #arge:-38 #aria:-31 #ario:49 #arli:-44 #arlo:33 #arly:76 #arra:-92 #asad:38 #asse:-49 #aste:126 #athe:37
#atis:26 #ativ:166 #atte:-52 #atur:36 #auge:-37 #aunq:27 #avia:-42 #avor:31 #away:32 #ayer:-41 #bado:-29 #bajo:-28
#been:-49 #beer:26 #befo:-46 #bien:120 #bios:-45 #blan:-39 #blem:-94 #bles:-37 #bloo:32 #book:-26 #both:-44 #bout:95
#brak:-33 #brea:-25 #brin:-39 #bsup:-38 #buen:-55 #busy:-46 #cabi:30 #call:45 #came:-35 #canc:-27 #cand:-50 #cani:55
#cant:130 #card:32 #caro:227 #carr:32 #cars:40 #casa:76 #caso:99 #ccid:-25 #ceit:64 #cesa:57 #cesi:-27 #cess:32
#chan:145 #char:-45 #chea:47 #cher:31 #choq:-39 #chur:27 #cias:-48 #ciat:33 #cibi:-95 #cide:55 #cido:59 #cita:51
#clie:-49 #coch:32 #comi:36 #como:-136 #comp:47 #cond:-29 #conm:29 #cono:-64 #cont:-55 #conv:65 #cool:-28 #corr:-30
#cost:-67 #coun:36 #cove:28 #cran:-28 #crat:38 #creo:53 #crib:-79 #ctob:-27 #ctua:48 #cual:-38 #cupe:57 #cupo:42
#curi:60 #cust:-44 #dale:-28 #dand:71 #davi:-36 #days:104 #ddle:-29 #deal:58 #deci:109 #deja:111 #deje:134 #dejo:95
#delo:56 #dema:36 #deme:-26 #denm:34 #dent:-42 #ders:74 #dese:31 #dial:41 #diga:-28 #dime:64 #ding:120 #dled:-27
#dles:33 #does:82 #doin:82 #done:-34 #dont:72 #doub:-119 #dson:-26 #dude:-65 #dule:-27 #eady:-32 #eaks:25 #eale:70
#eape:47 #earl:26 #eate:27 #eave:168 #ecal:96 #ecan:55 #eces:63 #ecia:27 #ecib:-99 #ecid:96 #econ:-29 #eded:62
#edes:-44 #edin:32 #edul:-27 #eede:62 #eedi:32 #eepi:31 #efie:58 #efor:-46 #egat:201 #egla:-45 #eglo:51 #ehic:-31
#eite:64 #eith:66 #ejal:52 #ejar:36 #ejel:133 #ejen:30 #ejor:96 #ejos:63 #elli:42 #ello:28 #else:88 #elvo:28
#eman:-27 #emas:36 #emin:78 #emos:-45 #empo:-28 #empr:117 #ench:44 #ende:-84 #endo:-43 #enen:43 #enes:-31 #engo:49
#enin:29 #enlo:41 #ensi:73 #ente:-71 #enti:-40 #ento:-104 #entr:-54 #eocu:48 #eone:56 #eopl:-36 #epin:31 #epla:-32
#eras:-34 #erdo:-31 #eren:-32 #eres:63 #erfe:-28 #eria:-50 #erio:-27 #erra:37 #erro:26 #erse:-37 #erso:-60 #erta:45
#esar:55 #esas:71 #escr:-72 #esit:-36 #esnt:109 #esos:53 #esse:-36 #este:-85 #esto:53 #even:36 #ever:40 #eves:40
#ewhe:100 #exac:-34 #exis:-28 #expe:73 #exte:-71 #exti:39 #exto:-27 #exts:-55 #falt:-38 #favo:31 #fect:-31 #feel:-31
#feri:-73 #fert:27 #fier:60 #filt:59 #fine:169 #firm:-39 #firs:-76 #fixe:-78 #flus:63 #fore:-37 #forg:57 #foun:82
#fren:-97 #frid:41 #fter:40 #full:44 #gall:35 #galo:27 #gara:56 #garr:-60 #gast:35 #gati:201 #gaug:-37 #gave:43
#gend:-42 #givi:27 #glar:-42 #goin:62 #good:92 #grac:-50 #grad:28 #gran:-26 #gual:-39 #guan:-35 #guna:123 #guno:120
#habl:-53 #hace:-38 #haga:62 #hago:73 #hanc:113 #hand:26 #hard:99 #harg:-39 #have:29 #heap:58 #heat:-48 #hedu:-27
#hera:31 #here:-41 #hich:-37 #hicl:-29 #hijo:37 #hile:-48 #hing:63 #hink:-61 #hizo:-25 #hoqu:-39 #hori:-115 #horr:28
#hose:105 #houg:80 #hour:33 #hout:36 #hree:70 #hrou:-35 #humb:99 #hurc:27 #iate:33 #iban:-59 #ibir:-104 #ible:28
#ices:73 #icey:42 #icle:-29 #iday:37 #idea:-96 #ided:88 #iden:-32 #iend:-66 #ient:-36 #ierr:37 #igan:72 #igua:-40
#ilte:41 #imer:-34 #imon:-27 #impo:53 #inda:-31 #inde:58 #ingu:169 #inki:29 #inst:36 #inte:40 #intm:45 #into:68
#invi:29 #ione:-27 #iosi:43 #iper:73 #ires:40 #irma:-38 #irst:-76 #irve:44 #ises:29 #isim:-27 #ismo:38 #isnt:32
#ithe:64 #itho:41 #ixed:-78 #jaja:52 #jalo:50 #jaro:54 #jelo:133 #jenl:35 #juev:39 #just:69 #keep:96 #know:-80
#lace:-40 #laro:-63 #ldnt:-27 #leav:169 #leep:28 #lejo:53 #lema:-46 #less:50 #lets:35 #leve:-36 #levo:58 #lien:-63
#lier:-42 #ligh:-29 #lind:-34 #ling:26 #list:26 #live:43 #lked:38 #llan:54 #lleg:-41 #ller:-48 #llin:47 #loca:30
#loco:149 #long:-147 #lood:31 #look:-43 #lqui:-27 #lsew:51 #ltas:25 #lune:-27 #lush:63 #lvid:52 #mabl:-51 #mana:-30
#mand:44 #mane:-56 #mano:36 #many:-34 #marc:-133 #mari:-31 #mati:-43 #matt:-37 #mber:-51 #mbre:51 #mbsu:-38 #meca:55
#mejo:96 #ment:-88 #meon:56 #mero:-98 #mess:-26 #mewh:49 #migo:25 #mind:91 #mism:31 #moda:26 #mome:-136 #mone:28
#more:-253 #morn:-59 #mpan:33 #mpos:48 #mpra:84 #much:-83 #muer:39 #myse:97 #nada:44 #nage:28 #name:-118 #ncel:-26
#nces:89 #nche:32 #ndan:88 #nday:28 #ndem:-40 #nder:55 #ndin:86 #ndso:-26 #nece:62 #need:-43 #nega:195 #neit:206
#nejo:-30 #nero:-32 #nger:-80 #nges:45 #ngin:-26 #ngun:169 #nice:116 #nico:52 #ning:186 #nles:45 #nlos:38 #nmig:29
#noma:76 #nomb:92 #none:300 #noth:30 #nozc:-127 #nswe:46 #ntac:-30 #ntas:54 #nter:46 #ntes:-59 #ntme:45 #ntra:-56
#numb:-35 #nume:-59 #nunc:-25 #nvie:62 #nymo:-43 #nywa:121 #ober:-49 #oble:-100 #obra:25 #ocid:37 #ocup:94 #odav:-36
#oday:-54 #odos:38 #oesn:109 #ofer:26 #oing:144 #oint:66 #oles:-35 #olvi:46 #omas:84 #ombe:41 #ombr:60 #omen:-137
#omeo:56 #omer:-47 #omew:48 #omod:26 #ompa:44 #onda:34 #ones:61 #oney:27 #onge:-97 #only:125 #onmi:29 #onoc:63
#onoz:-127 #onta:-35 #onvi:45 #ooki:-31 #ople:-37 #opti:-38 #oque:-40 #oras:48 #orge:61 #orit:-122 #orks:-39
#orni:-52 #orre:-34 #orri:-116 #orry:93 #orth:186 #osib:53 #osid:30 #othe:45 #othi:54 #ough:25 #ould:-36 #ound:82
#ount:36 #owne:-62 #ozco:-127 #para:74 #part:-40 #pasa:-28 #pass:198 #pena:92 #pend:56 #peni:28 #pens:61 #peop:-36
#perd:-31 #perf:-28 #pero:143 #plac:-36 #plea:-46 #poin:68 #poke:32 #posi:52 #pped:-44 #ppen:35 #ppoi:42 #ppre:33
#pran:88 #pref:47 #pren:-60 #preo:48 #pres:-66 #pric:56 #prim:-44 #prob:-106 #ptio:-38 #pues:-43 #putt:70 #quea:79
#qued:30 #quie:-97 #quit:71 #raci:-48 #rage:49 #raig:-65 #rake:-32 #ranc:-45 #rand:-46 #rano:72 #ratc:38 #rath:42
#rato:34 #rcan:-46 #rcha:-55 #rdar:31 #rday:26 #rdly:28 #reca:99 #reci:-85 #reco:34 #rect:-35 #refi:58 #rely:28
#remi:70 #renc:31 #rend:-59 #reno:-74 #reoc:48 #repl:-52 #resa:-59 #ress:-30 #rest:50 #rfec:-28 #rget:61 #riba:-60
#rice:51 #rich:32 #rida:36 #ries:-123 #righ:95 #rime:-35 #ring:-62 #rios:54 #rita:-113 #rito:32 #rlie:-44 #rmat:-33
#rnin:-50 #road:-25 #robl:-109 #rong:-37 #roug:-51 #roun:36 #rque:-38 #rrec:-33 #rrie:-134 #rsda:39 #rson:-60
#ruck:-25 #ruid:-36 #runs:25 #rven:31 #saba:-29 #sabe:25 #sada:28 #sali:-55 #sari:49 #sary:32 #satu:33 #says:45
#sche:-27 #scri:-75 #sday:34 #seas:-32 #seco:-29 #self:97 #sell:53 #sema:-27 #sewh:51 #shop:-68 #sibl:38 #sida:38
#siem:43 #sien:35 #siga:84 #sign:-38 #sima:-30 #simo:-32 #sirv:38 #sito:-37 #sits:26 #sive:77 #skip:98 #slee:28
#sold:-114 #solo:92 #some:72 #sona:-42 #soon:35 #sorr:87 #soun:-35 #spen:71 #spok:39 #sque:76 #ssar:32 #ssed:-79
#stam:104 #stan:-34 #stil:-36 #stom:-44 #stop:-79 #stoy:119 #stri:25 #stuf:69 #supe:-28 #suyo:-35 #swer:46 #take:35
#tall:-64 #tamo:116 #tand:-59 #tard:35 #taro:26 #tede:-44 #tell:-46 #temp:71 #teng:50 #tere:58 #text:-118 #that:37
#ther:39 #thos:95 #thou:102 #thre:64 #thro:-37 #thum:97 #tiem:-26 #tien:-47 #tier:36 #till:-47 #time:43 #ting:104
#tion:-66 #tira:-30 #tire:69 #tive:106 #tivo:57 #tmen:45 #tobe:-27 #toda:-80 #tome:-42 #took:-40 #town:-40 #trai:-55
#tran:-33 #tres:28 #truc:-25 #tter:-74 #ttin:72 #tual:45 #tues:-46 #tuff:69 #turd:33 #turn:-38 #uall:37 #ualq:-27
#ucha:-29 #ueak:85 #ueda:75 #uena:-27 #uere:51 #uesd:-27 #ueve:37 #uier:-77 #uldn:-27 #umbe:-36 #umbs:99 #umer:-59
#unch:-26 #unds:-28 #unes:-27 #unle:45 #uper:-28 #urch:26 #urda:33 #urio:59 #ursd:39 #usta:39 #uste:-50 #usto:-78
#utti:68 #vale:57 #vehi:-31 #vemo:-28 #vera:-42 #vers:-40 #very:28 #viaj:-36 #vide:39 #vido:33 #vien:40 #vier:54
#visi:-27 #vive:-54 #vuel:26 #wapp:-30 #week:-68 #were:208 #weve:32 #what:26 #when:54 #wher:112 #whic:-37 #whil:-48
#will:25 #wipe:78 #wner:-53 #wont:74 #work:34 #worr:-125 #wort:182 #wren:45 #wron:-37 #xact:-34 #xist:-28 #xtee:-60
#xtin:53 #xtos:-33 #year:35 #ying:37 #ymor:-43 #your:41 #ysel:97 #yway:121 #zero:91 %again_later:-174
%again_later%agree:-59 %again_later%away:-78 %again_later%bad:36 %again_later%bring:-58 %again_later%busy:-45
%again_later%call_off:30 %again_later%car:44 %again_later%do_it:-35 %again_later%doubt:40 %again_later%family:27
%again_later%money:-87 %again_later%on_way:133 %again_later%opening:32 %again_later%pay_day:-53 %again_later%phone:46
%again_later%place:-32 %again_later%season:-26 %again_later%start_again:46 %again_later%wrong_one:83 %agree:-73
%agree%away:41 %agree%bad:-29 %agree%bring:-166 %agree%call_off:74 %agree%car:106 %agree%car_part:229
%agree%doubt:-60 %agree%fails:-27 %agree%how_long:-69 %agree%leave_me:-30 %agree%lift:-39 %agree%meaning:39
%agree%message:40 %agree%money:-50 %agree%odometer:47 %agree%place:73 %agree%question:213 %agree%refuse:-92
%agree%shift_it:-54 %agree%start_again:-25 %agree%thanks:141 %agree%who:58 %agree%wrong_one:97 %away:-25
%away%bring:-39 %away%busy:-27 %away%call_off:25 %away%car_part:-30 %away%do_it:94 %away%doubt:-51
%away%elsewhere:-33 %away%how_long:-26 %away%leave_me:-25 %away%lift:-32 %away%money:42 %away%noise:39
%away%on_way:-54 %away%refuse:154 %away%staff:33 %away%thanks:52 %away%wrong_one:27 %bad%call_off:79 %bad%car_part:49
%bad%doubt:52 %bad%question:42 %bad%refuse:72 %bad%shift_it:26 %bring%busy:-32 %bring%call_off:-86 %bring%car_part:71
%bring%doubt:-50 %bring%elsewhere:57 %bring%gone_car:38 %bring%leak:41 %bring%leave_me:-42 %bring%message:81
%bring%on_way:-26 %bring%question:35 %bring%refuse:44 %bring%shift_it:-47 %busy:51 %busy%fails:28 %busy%how_long:33
%busy%staff:-30 %busy%wrong_one:46 %call_off:35 %call_off%car_part:49 %call_off%do_it:-27 %call_off%doubt:70
%call_off%fails:-118 %call_off%family:61 %call_off%gone_car:33 %call_off%how_long:77 %call_off%leave_me:48
%call_off%lift:43 %call_off%message:-61 %call_off%on_way:67 %call_off%opening:81 %call_off%question:168
%call_off%refuse:-91 %call_off%season:-31 %call_off%staff:53 %call_off%start_again:78 %call_off%thanks:579
%call_off%who:-26 %call_off%wrong_one:113 %car%family:25 %car%gone_car:-108 %car%refuse:-138 %car%season:27
%car%thanks:40 %car%wrong_one:-84 %car_part:-83 %car_part%doubt:-33 %car_part%elsewhere:-45 %car_part%fails:-66
%car_part%gone_car:-28 %car_part%how_long:-32 %car_part%leak:-36 %car_part%leave_me:188 %car_part%meaning:-44
%car_part%message:261 %car_part%money:-61 %car_part%on_way:-36 %car_part%place:-54 %car_part%refuse:112
%car_part%shift_it:65 %car_part%smoke_smell:-58 %car_part%start_again:51 %car_part%thanks:70 %car_part%wrong_one:73
%do_it%elsewhere:-135 %do_it%fails:34 %do_it%family:-125 %do_it%gone_car:-52 %do_it%leave_me:49 %do_it%message:26
%do_it%staff:-76 %do_it%start_again:44 %do_it%thanks:61 %doubt:25 %doubt%money:36 %doubt%on_way:-41
%doubt%question:137 %doubt%refuse:153 %doubt%start_again:30 %doubt%thanks:41 %doubt%wrong_one:78 %elsewhere:106
%elsewhere%family:69 %elsewhere%gone_car:26 %elsewhere%money:-50 %elsewhere%odometer:70 %elsewhere%place:-43
%elsewhere%question:-39 %elsewhere%thanks:42 %elsewhere%who:26 %fails:-116 %fails%on_way:33 %fails%place:-28
%fails%refuse:-31 %fails%shift_it:40 %family%money:29 %family%odometer:35 %family%question:45 %family%refuse:66
%family%staff:107 %family%start_again:26 %family%who:-29 %gone_car:-122 %gone_car%odometer:69 %gone_car%on_way:48
%gone_car%question:115 %gone_car%refuse:52 %gone_car%thanks:87 %gone_car%who:109 %gone_car%wrong_one:70
%how_long%on_way:28 %how_long%opening:45 %how_long%refuse:67 %leak%wrong_one:30 %leave_me%message:66
%leave_me%money:-39 %leave_me%refuse:63 %leave_me%shift_it:34 %leave_me%start_again:-48 %leave_me%wrong_one:71
%lift:-46 %machine:-50 %machine%staff:-29 %meaning:-45 %meaning%phone:-25 %meaning%question:-27 %message%question:-37
%message%refuse:-186 %message%start_again:-102 %message%wrong_one:-60 %money:31 %money%on_way:65 %money%pay_day:-28
%money%refuse:162 %money%shift_it:-37 %money%staff:41 %money%start_again:-31 %money%thanks:29 %money%wrong_one:67
%noise:-75 %noise%odometer:-30 %noise%question:-34 %noise%refuse:-37 %noise%thanks:27 %odometer:57
%odometer%question:52 %odometer%refuse:42 %odometer%staff:70 %on_way%place:-54 %on_way%refuse:133 %on_way%shift_it:50
%on_way%start_again:64 %on_way%wrong_one:31 %opening%question:30 %opening%refuse:79 %pay_day:-83 %pay_day%refuse:-40
%pay_day%season:-42 %phone:-134 %phone%shift_it:-40 %phone%staff:-45 %phone%who:27 %phone%wrong_one:-27
%place%refuse:47 %question:-165 %question%staff:56 %question%start_again:38 %question%thanks:147 %question%who:71
%question%wrong_one:77 %refuse:442 %refuse%season:-57 %refuse%who:-55 %refuse%wrong_one:-84 %season:-89 %shift_it:83
%shift_it%start_again:53 %shift_it%thanks:42 %smoke_smell:-59 %staff:58 %staff%who:28 %staff%wrong_one:60
%start_again:-33 %start_again%wrong_one:74 %thanks%who:47 %thanks%wrong_one:76 %who%wrong_one:26 %wrong_one:-108
@?:-122 @after_visit:-556 @car:-52 @confirm:-620 @confirm_stop:162 @day:27 @later:-212 @nothing:-307 @odometer:-81
@offers:119 @offers_:-63 @reading:-54 @times:-280 @walk_in:30 ^_$:-84 ^_a:88 ^_actually:28 ^_ahora:-56 ^_ahorita:-55
^_any:-108 ^_anything:40 ^_appreciate:59 ^_aqui:-107 ^_are:-25 ^_as:155 ^_asi:223 ^_both:-80 ^_call:-27 ^_can:-75
^_cant:130 ^_como:-190 ^_cost:-28 ^_count:49 ^_cuanto:-41 ^_de:-86 ^_dejelo:35 ^_did:-42 ^_do:-152 ^_does:-31
^_dont:75 ^_either:-173 ^_estoy:28 ^_fine:-31 ^_first:-28 ^_forget:35 ^_found:61 ^_go:-27 ^_going:116 ^_good:-45
^_gracias:-217 ^_had:-30 ^_hard:57 ^_how:-76 ^_id:62 ^_ill:48 ^_im:55 ^_imposible:30 ^_is:-134 ^_it:-90 ^_just:-27
^_la:-91 ^_last:-50 ^_leave:99 ^_let:-30 ^_lets:43 ^_lo:-82 ^_me:-199 ^_mejor:129 ^_mi:37 ^_mil:-52 ^_muchas:-32
^_muy:169 ^_my:-56 ^_nah:43 ^_nd:-36 ^_need:-38 ^_negative:120 ^_negativo:81 ^_neither:212 ^_nel:160 ^_never:26
^_ni:299 ^_nice:164 ^_ninguna:110 ^_ninguno:92 ^_no:266 ^_nombre:75 ^_none:168 ^_nop:67 ^_not:121 ^_nothing:103
^_nunca:-27 ^_ok:-164 ^_on:26 ^_only:82 ^_option:-29 ^_para:142 ^_paso:56 ^_pass:66 ^_por:-164 ^_prefiero:47
^_puedo:-48 ^_put:-29 ^_que:-46 ^_quit:34 ^_se:-70 ^_si:-236 ^_simon:-27 ^_skip:50 ^_solo:36 ^_someone:-31 ^_st:-34
^_sure:75 ^_tengo:99 ^_thanks:-268 ^_that:128 ^_the:-45 ^_there:-71 ^_those:-27 ^_thumbsup:-38 ^_thursday:56
^_todavia:-51 ^_too:230 ^_we:151 ^_were:205 ^_what:-153 ^_why:-78 ^_will:-66 ^_wont:37 ^_works:-46 ^_y:-60 ^_ya:-98
^_yeah:150 ^_yep:-56 ^_yes:-143 ^_yo:95 ^_you:-71 ^_your:-70 ^_zero:47 a:84 a__hora:50 a__horas:33 a__que:36
a__time:-54 a_customer:-30 a_esa:59 a_esas:35 a_fee:-25 a_good:-77 a_guy:118 a_hacer:49 a_la:-41 a_las:-26 a_los:27
a_mechanic:33 a_no:28 a_ser:25 about:100 about__tires:55 about_it:-93 about_oil:40 about_the:54 accident:-25
aceite:64 aceite_$:53 acomoda:26 actually:37 after:49 after_all:29 after_the:27 again:-27 again_$:-46 against:50
agarra:-40 agendeme:-40 agendeme_$:-39 aguanta:-27 ahi_$:77 ahi_paso:-39 ahi_voy:-36 ahora:-97 ahora_$:-58
ahora_no:-89 ahorita:-110 ahorita_$:-46 ahorita_no:-59 aint:39 al:56 alguien_que:28 all:172 all__them:-30 all_day:-48
all_good:32 all_set:196 all_that:41 already_$:-31 already_did:-33 already_had:36 alright:29 also:46 am:-43 am_$:-26
amables:-29 an:31 an__change:-26 an_appointment:66 an_oil:-27 and:95 and__i:27 and__is:36 and_did:-28 answer:37
antes:-48 any:-92 any__them:31 any__those:-59 any_day:-25 anymore:-43 anymore_$:-33 anything_but:46 anyway:121
anyway_$:113 apenas:27 appointment:47 appreciate:36 aqui:-195 aqui_$:-81 aqui__es:-25 aqui__vive:-53 aqui_no:-118
are:-30 are_$:-27 are_fine:-27 arreglaron:-59 arreglo:51 as:188 asi:423 asi_$:50 asi__bien:79 asi__no:31 asi_es:-26
ask:-43 ask_me:-27 at:-80 at_all:-41 at_the:-46 away:32 ayer:-40 back:28 back_$:-32 be:69 be_$:62 be__that:40
be__there:46 be_back:65 be_doing:31 be_there:-28 been:-49 beer:27 before:-46 bien:134 bien_asi:53 bien_gracias:67
bien_no:48 bill:-28 blood:32 book:-39 book_it:-34 both:-103 both_are:-30 bother:61 brakes:-27 bring:-34 buen:-41
busy:-46 but:288 but__much:26 but__you:28 but_how:25 but_i:35 but_ill:40 but_monday:-26 but_no:73 but_what:35 by:-70
by__name:-36 by_that:-36 cabin:30 cabin_filter:25 call:-53 call_me:-46 cambio:53 cambio__aceite:50 cambio_el:59
cambios:-45 came:-26 can__it:31 can_i:-31 cant:130 cant_do:180 cant_make:27 cant_say:-64 car_$:-37 car_is:93 caro:234
caro_$:135 carro_$:-34 cars:42 casa:71 casa_$:67 caso:102 caso_$:98 chances:91 chances_$:91 change_$:-26
changed__mind:47 changed_my:43 changes:47 changes_$:71 charge:-29 cheaper:48 choque:-39 church:27 cita:49 cliente:-49
cochera:32 cochera_$:32 coming:33 como:-162 como_esta:37 como_no:-196 con:79 con__mecanico:-31 con__que:29 con_mi:-32
con_un:67 conmigo:29 conmigo_$:25 conozco:-126 conozco_$:-74 conviene:45 conviene_$:45 correct:-25 cost:-54 count:49
count__out:53 count_me:49 covered_$:25 creo:53 curiosidad:30 customer:-42 da:-78 day__me:56 day_for:54 days:53 de:32
de__dos:33 de__llantas:70 de__me:52 de__no:-63 de__que:44 de__taller:-33 de__ya:33 de_aceite:30 de_aqui:-35 de_eso:32
de_freno:-30 de_la:25 de_las:59 de_los:47 de_noche:26 de_que:-37 de_veras:-33 dealer:65 decided:89 decided_against:42
dejaron:42 dejelo:133 dejelo_asi:52 dejenlos:30 dejo:95 dejo_$:85 di:-28 dia_$:28 did:-156 did_it:-58 did_that:-34
did_the:-47 diga:-25 dije:25 dime:64 dinero_$:-33 do:97 do_$:-88 do__instead:-27 do__need:-52 do__of:81 do__own:135
do_any:44 do_friday:39 do_i:-85 do_my:135 do_not:-45 do_the:29 do_thursday:51 does:-27 does_it:-35 doesnt:109
doesnt_matter:-34 doesnt_work:122 doing:82 doing_it:28 done:-33 dont:72 dont__a:-26 dont__any:-32 dont__it:105
dont__me:-75 dont__the:37 dont__you:-41 dont__your:86 dont_drive:-34 dont_have:-92 dont_know:-74 dont_need:60
dont_own:-28 dont_see:-29 dont_stop:58 dont_text:-54 dont_think:101 dont_want:119 dos_me:34 down:-117 down_$:-75
drive_$:-37 dude:-65 earlier:-42 early:80 early_$:94 early_for:29 either:-135 either_$:-61 el__es:28 el__lo:26
el_aceite:55 el_carro:32 el_dia:-25 el_jueves:55 el_momento:-29 el_otro:-27 el_viernes:46 else:42 else_$:41
elsewhere:51 elsewhere_$:47 en:37 en__casa:83 en_el:39 en_eso:27 en_la:46 en_otro:-25 end:-37 entiendo:-43 entran:-46
era:26 es:-81 es_$:-83 es_de:-39 es_mecanico:64 es_mi:-36 es_necesario:48 esa:63 esa__no:31 esa_hora:51
esa_persona:-27 esas:76 esas_horas:43 escriban:-56 escriban_$:-33 ese_carro:34 ese_senor:-28 eso:110 eso_$:49 esos:53
esta__caro:101 esta_bien:-60 esta_muy:32 estamos:107 este:-73 esto:-33 esto_$:-25 estoy:117 estoy_bien:172 even:36
ever:68 ever_$:67 existe:-28 falta:-33 far:28 favor:32 favor_$:38 fee:-27 feria:-72 filter:40 fine:169 fine_$:86
fine__me:-47 fine_with:-38 first:-76 first_$:-37 fix:77 fix_it:67 fixed:-78 fixed_it:-29 flush:60 for:142
for__blood:32 for__me:-33 for_it:-84 for_me:221 for_my:30 for_nothing:-33 for_now:44 for_that:127 for_the:-41
for_this:29 forget:61 forget_it:80 found:82 freno:-58 freno_$:-45 friday:44 friday_$:114 friday_instead:-28 full:30
galon:32 garage:49 garage_$:25 gauge:-37 gauge_is:-37 gave:43 gave_you:57 get:-53 go:-56 go__it:-27 go__the:50
go_for:-31 go_to:64 going:62 going__be:-25 going__have:37 going_on:-29 going_to:94 good:92 good_$:108 good_for:-52
got:35 got__guy:120 got_a:143 got_it:-28 gracias:-48 gracias_$:-40 gracias__no:28 gracias__ya:43 gracias_pero:64
gracias_por:-34 gracias_ya:26 grandson:-26 gratis:26 gusta:32 gusto:-33 guy:113 guy_$:90 guy__it:-27 guys_$:-38
hablan:-26 hace:-85 hacer:32 hacer_$:25 had__done:25 haga:76 hago:73 hago_$:54 handled:-27 handles:34 happen:29
happy:-47 happy_with:-29 hard:71 hard_no:55 hardly:28 have:35 have__no:-38 have__say:34 have_an:59 have_it:-46
have_never:-25 have_no:-43 have_someone:65 hay:-76 hay_problema:-33 heat:-36 here:-48 hijo:38 him:-28 hizo:-25
hora:41 horas:48 hot:-38 hours:30 how:44 how__is:56 how__was:29 how_about:-25 hoy:27 i:-37 i__a:49 i__be:41 i__do:37
i__got:32 i__have:-27 i__it:-30 i__know:-25 i__my:77 i__never:30 i__no:-42 i__see:-25 i__that:-25 i__the:-33
i__to:-30 i__want:32 i_can:28 i_come:25 i_do:80 i_dont:-81 i_get:-26 i_go:46 i_got:55 i_have:47 i_like:29 i_need:-126
i_said:-38 i_want:-101 i_will:50 i_wont:31 id:85 id__not:41 id__talk:-39 id_rather:25 idea:-90 idea_$:-39 if:91
if_i:-52 igual_$:-37 ill:78 ill__it:114 ill__my:90 ill__there:-34 ill__you:-26 ill_be:-31 ill_pass:70 ill_take:75
im:175 im__a:-27 im__of:-30 im__the:-83 im_all:55 im_down:-74 im_fine:121 im_good:278 im_in:-26 im_not:-116
im_ready:-35 imposible:48 in__day:65 in_the:85 interesa:-61 interesa_$:-89 interest:35 interested_$:-27 into:68
is:-35 is_$:64 is__a:-76 is__bill:-25 is__going:-56 is__how:72 is__no:32 is_a:67 is_fine:87 is_full:27 is_good:-65
is_not:-81 is_ok:33 is_that:-52 is_there:-52 is_too:126 isnt:32 it:95 it_$:-51 it__a:33 it__dont:26 it__fine:72
it__me:-42 it__more:-38 it__this:56 it__to:-88 it_be:35 it_but:58 it_done:29 it_for:-39 it_going:-31 it_is:106
it_myself:71 it_on:41 it_take:-27 it_wont:-50 jaja_$:29 jueves:41 just:75 keep:97 keep_me:39 keep_texting:26
keep_them:26 know:-92 know_you:-41 la:85 la__de:-31 la__no:-37 la_casa:73 la_cochera:33 la_luz:-33 la_pena:55
la_vez:25 las:34 las_$:-40 las__el:27 las_llantas:49 late:50 late__me:29 late__the:56 late_in:56 later:-30 le:65
le__el:51 le_cambio:59 le_falta:-50 le_voy:38 lease:33 leave:151 leave__alone:-32 leave_it:145 leave_me:-57 lejos:53
let:-26 let_me:-58 lets:35 like:27 like_a:29 live:43 llantas:57 llantas_$:43 lleve:-37 lleve_con:-31 llevo:58 lo:73
lo__con:34 lo__mi:-27 lo__y:-25 lo__ya:-32 lo__yo:82 lo_arreglo:57 lo_choque:-39 lo_hago:93 lo_hizo:-27 lo_lleve:-36
lo_llevo:44 lo_necesito:-45 lo_que:25 lo_uso:34 lo_vendi:-27 lo_voy:39 loco:133 lol:55 lol_$:38 long:-34 longer:-96
longer__it:-49 longer__the:-34 longer_have:-42 longer_own:-35 looking:-34 los__me:42 los_cambios:-45 los_conozco:-58
los_dos:32 lunes:-27 luz:-37 luz_de:-32 make_it:-25 mal_$:-49 manana:-29 mandando:53 mandando_$:73 manden:-51
manden_mensajes:39 manden_nada:-43 mandenme:35 manejo:-30 many:-34 marcha:-70 marcha_$:-64 mas:-130 mas_$:-110
matter:-35 me_$:-96 me__i:25 me__la:59 me__mas:-58 me__mensajes:32 me__nada:-106 me_about:155 me_acomoda:26
me_alone:-53 me_but:27 me_conviene:38 me_dejaron:42 me_escriban:-29 me_gusto:-33 me_in:-40 me_interesa:-66 me_like:25
me_llame:26 me_lo:69 me_manden:-25 me_now:47 me_off:-31 me_out:46 me_queda:90 me_sale:-30 me_sirve:49 me_sirven:32
mecanico:58 mecanico_$:64 mejor:99 mejor_no:32 mensajes_$:-58 mes:-26 mi:44 mi__es:54 mi__le:27 mi__me:30 mi_hijo:38
mi_mecanico:26 mil:-48 mil_gracias:-35 miles_$:-25 mismo:39 momento:-120 momento_no:-66 monday:-41 mondays:64
money:30 money_$:26 more:-210 more_$:-122 more_of:-26 mornings:-35 much_$:-27 muere:35 muy:276 muy__gracias:-28
muy__para:25 muy_amables:-27 muy_caro:130 muy_lejos:37 muy_temprano:137 my:108 my__in:28 my__no:33 my__oil:45
my__says:59 my_blood:32 my_car:-38 my_chances:91 my_grandson:-26 my_mind:51 my_number:36 my_own:159 my_wife:38
myself:97 myself_$:94 n:292 nada:50 nah:43 name:-61 nd:-43 necesario:57 necesario_$:43 necesito:-35 necesito_$:-30
necessary:32 necessary_$:32 need:-124 need_$:48 need_a:-45 need_that:-40 need_to:-114 needed:62 needed_$:91
needing:28 negative:120 negativo:81 neither:206 neither_$:134 nel:160 nel_$:63 never_mind:30 new:-40 ni:349 ni_el:40
ni_la:29 ni_loco:110 nice:123 ningun:-66 ninguna:123 ninguno:113 ninguno__los:51 ninguno_de:54 no:102 no_$:368
no__ahora:-61 no__and:-35 no__at:-62 no__bien:-59 no__cita:30 no__cliente:-39 no__conozco:-85 no__de:-47 no__dont:47
no__el:-64 no__en:-27 no__ese:-31 no__good:46 no__gracias:31 no__gusto:-33 no__hago:-35 no__have:-38 no__here:-106
no__i:58 no__interesa:84 no__is:201 no__it:28 no__me:65 no__mensajes:-41 no__necesario:55 no__necesito:29
no__ningun:-72 no__own:-35 no__pero:27 no__problema:-39 no__que:-38 no__quien:-30 no__quiero:26 no__recibir:-68
no__tengo:25 no__texts:-26 no__that:-58 no__the:77 no__them:33 no__to:-26 no__voy:73 no__was:27 no__what:25
no__who:25 no__y:54 no__yet:-105 no__yo:-67 no__you:140 no_agarra:-40 no_and:142 no_but:90 no_car:-41 no_conozco:-35
no_creo:57 no_dont:27 no_entiendo:-30 no_es:-160 no_esta:-49 no_existe:-28 no_gracias:305 no_hay:-78 no_i:156
no_idea:-82 no_im:56 no_it:27 no_just:34 no_keep:46 no_le:39 no_longer:-100 no_los:-41 no_manden:-26 no_mas:-55
no_me:-109 no_mi:27 no_more:-213 no_my:52 no_necesito:26 no_need:82 no_nomas:28 no_not:-90 no_ocupo:75 no_on:32
no_one:-91 no_pero:64 no_point:30 no_prende:-25 no_problem:-69 no_puedo:72 no_quiere:-31 no_se:-125 no_si:38
no_sigan:26 no_sirve:-32 no_soy:-257 no_tengo:-136 no_thank:86 no_thanks:198 no_that:53 no_tiene:-28 no_to:-41
no_traigo:-65 no_vive:-54 no_vuelvo:27 no_way:55 no_what:121 no_worries:-129 no_y:38 no_ya:97 noises:29 nomas:76
nombre:49 none:196 none__them:38 none__those:54 none_of:113 nop:71 nop_$:58 not:-80 not_$:-28 not__at:30 not__car:-47
not__customer:-40 not__it:88 not__me:36 not__now:-75 not__the:75 not__this:-31 not__to:113 not__with:-46 not__yet:-39
not__you:-25 not_a:-76 not_at:60 not_coming:27 not_doing:36 not_ever:80 not_for:57 not_friday:30 not_going:73
not_happy:-49 not_him:-27 not_interested:99 not_me:-100 not_monday:60 not_my:-61 not_right:-97 not_sure:-42
not_the:-75 not_to:30 not_today:-48 not_worth:103 not_yet:-161 nothing:52 nothing_$:-39 now:-137 now_$:-178
now__me:-42 number:-34 numero:-59 nunca_$:28 october:-27 october_$:-26 ocupo:47 ocupo_$:30 of:-39 of_them:26
of_those:50 of_town:-29 of_you:-26 off_$:-69 off_my:35 oil:61 oil_changes:49 ok_$:115 ok_gracias:-31 old:25
on__thought:39 on_my:-42 on_second:39 on_that:67 on_this:69 one:-29 only:125 only__me:61 opcion_$:-28 option:-37
or:-65 or_anything:28 or_no:-45 otro_$:-26 otro_dia:54 our:29 out__town:-28 out_of:-41 over_$:-38 over_here:79 own:86
own_$:32 own_it:-33 own_oil:45 owner:-53 para:72 para__lo:-42 para_el:-35 para_nada:159 parts:-25 pasa:-45
pasa__no:-42 pasa_si:-36 pass:240 pass_$:123 passed:-45 pay:-25 pena:65 people:-36 perdon:-25 pero:139 pero__es:25
pero_no:39 pero_ya:27 persona:-45 please:-45 please_$:-28 point:27 por:-119 por__momento:-29 por__no:-150 por__y:29
por_ahora:-76 por_curiosidad:30 por_favor:38 por_que:-160 por_un:26 prefiero:58 prefiero_no:35 prende:-56
prende_$:-35 price:-60 prices:74 pricey:42 problem:-53 problem_$:-46 problema:-46 puedo_$:54 puedo_el:34 put:-73
put__in:-34 put_me:-25 putting:64 que:-52 que__eso:30 que__llame:25 que__si:-34 que_es:-31 que_lo:-36 que_me:27
que_no:-61 que_pasa:-33 que_si:37 que_va:88 queda:105 queda_$:76 queda__lejos:43 queda_muy:34 quedo:-36 quien:26
quien__lo:69 quien_es:-33 quien_me:61 quienes:-44 quienes_son:-39 quiero:-56 quiero__de:-26 quiero_recibir:-67
quit:49 quit_sending:36 quiten:29 rather:42 rather__to:-40 rather_not:44 rather_talk:-45 ready:-41 ready_$:-38
recibir:-87 reminders:77 reminders_$:81 replaced:-41 rich:32 rich__my:32 rich_for:32 right:75 right_$:259
right_now:-144 road:-25 runs:25 sabado:-28 said_no:-30 sale:-32 sale_$:-26 salir:-27 saturday:27 saturday_$:34
says:45 se:-149 se__que:-34 se_quienes:-42 second:-28 second_$:-54 second_thought:39 see:-56 selling:46 send:-35
send_me:-39 sending:45 sending_me:33 set:218 set_$:173 set_for:44 she:27 shop:-71 shop_$:-31 si:-207 si_$:-60
si__interesa:-28 si__no:-101 si_como:-30 si_gracias:-35 si_me:25 si_no:-48 si_ya:-50 siempre:43 siempre_no:38
sigan:60 sigan_mandando:41 simon:-27 sir:40 sir_$:40 sirven:34 sits:32 skip:102 skip_it:38 skip_the:34 so:186 so_$:26
so_im:42 so_much:-31 so_no:190 sold:-113 solo:92 someone:58 someone_$:35 somewhere:49 son:-53 son_$:-29 soon:30
sorry:87 sorry_$:88 sounds:-28 sounds_good:-34 soy:-257 soy__persona:-47 soy_cliente:-40 soy_el:-35 soy_esa:-29
soy_yo:-65 spending:33 squeak:61 st:-37 st_$:-35 still:-36 stop:-74 stop_$:-104 stop__me:63 stop__the:71 stop_with:71
stuff:69 su:36 super:-27 suyo:-35 swapped:-30 take:42 take__chances:91 take__off:-42 take_it:47 take_me:-43
take_my:91 take_the:-33 talk:-50 talk_to:-40 talked:39 taller:-46 taller_$:-29 tarde:35 tell:-27 temprano:82
temprano_$:70 tengo:48 tengo__me:56 tengo_carro:-37 tengo_quien:56 tengo_un:32 text__about:89 texting:53
texting_$:-28 texting_me:60 textos:-28 texts:-55 texts_$:-55 th:-52 thank:74 thank_you:80 thanks:-58 thanks_$:-52
thanks__no:28 thanks__nothing:-32 thanks_but:81 thanks_for:-115 that:37 that__you:44 that_is:73 that_name:-36
that_old:32 that_one:26 that_wont:40 that_would:-30 the:56 the__but:28 the__for:164 the__is:67 the__of:-42
the__one:-25 the__stuff:38 the__went:38 the_car:75 the_day:64 the_dealer:62 the_earlier:-28 the_flush:53
the_garage:27 the_oil:29 the_owner:-50 the_th:-50 the_tire:60 the_tires:59 the_way:30 the_wiper:26 the_work:-36
them_$:34 there:-104 there__fee:-25 there__no:-47 there_a:-43 there_is:-66 these_$:-27 these_days:37 thing_$:31
think:-84 think__it:-98 think_about:-68 think_so:57 this_is:-54 this_number:-26 this_one:53 this_time:65
this_week:-38 those:95 though:45 thought:35 three:70 three_$:34 through:-35 thumbsup:-38 thumbsup_$:-38 thursday:43
thursday__work:70 thursday_at:-29 tiempo:-27 tiene:-39 tienen:40 time:34 time_$:59 tire:27 tires:43 tires_$:25 to:-75
to__for:-29 to__guy:28 to__it:84 to__me:-47 to__no:57 to_be:-50 to_church:26 to_do:53 to_have:34 to_say:83
to_stop:-37 to_that:-61 to_the:73 todavia:-36 todavia_no:-52 today:-54 today_$:-51 todos:26 too:341 too_$:-54
too__for:174 too_early:148 too_far:36 too_late:74 too_rich:32 took:-40 took__of:-27 took_care:-25 top:41 town:-37
town_$:-27 trabajando:25 traigo:-65 trip:-27 try:154 tuesday:-26 two:-27 uh:127 un:45 unless:45 unless__is:40
unless_it:40 up:-44 up_$:-41 up_in:25 up_the:26 use:25 use_the:36 uso:34 uso_$:27 ustedes:-44 ustedes_$:-88 va:115
va_$:59 vale:58 van:-32 ve:33 vehicle:-39 vemos:-28 vendi:-44 veras:-33 vez_me:25 vez_pasada:25 viernes_$:37 vive:-54
voy:27 voy_$:-42 voy__hacer:41 voy_a:80 vueltas:25 vuelvo:29 want__texts:-35 want_it:81 want_your:-33 way:77 we:153
we__the:42 we_dont:-33 we_have:90 we_sold:-43 we_will:106 wednesday:26 week:-59 week_$:-58 went_away:43 were:208
were_fine:43 were_good:31 weve:32 what:36 what__it:38 wheel:-35 when:59 when_i:-31 while:-44 who:59 who__are:-38
who__this:39 who__you:52 who_is:31 who_you:-60 why:-86 why_not:-104 wife_says:44 will:25 will__be:47 will_do:-36
will_it:-30 wiper:27 wipers:52 wipers_$:46 with:-41 with_me:-34 with_the:34 without:41 wont:74 wont__over:-32
wont_be:111 wont_go:-37 wont_work:54 work:66 work_$:36 work__me:51 work_for:50 works:-39 works_$:-60 worries:-130
worth:182 worth_it:79 would_be:-32 would_it:26 wrong:-37 y:34 y_ya:-36 ya:-85 ya__de:34 ya__existe:-28 ya__gracias:44
ya__hace:-45 ya__lleve:-33 ya__lo:-32 ya_lo:-50 ya_no:-66 ya_tengo:89 yeah_$:-169 yeah_no:29 year:27 yep:-57 yes:-201
yes_$:-93 yet:-219 yet_$:-173 yo:145 yo_$:-58 yo__la:74 yo__le:62 yo__soy:-64 yo_lo:166 yo_mismo:40 yo_ni:-44
yo_no:-114 you:-35 you_$:-65 you__it:-57 you__what:26 you_are:-36 you_can:62 you_know:26 you_my:65 you_think:-49
you_to:-27 your:44 your__have:-30 your__is:-27 your_shop:-39 your_texts:-31 yours_$:-27 zero:91
"""
