"""What speaks for and against `later`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "later"
BIAS = -148
WEIGHTS = """\
#abie:-27 #abla:43 #ablo:109 #abor:46 #abou:54 #acab:76 #acac:51 #acat:55 #aced:-35 #acia:-50 #acio:27 #aded:-40
#adel:91 #ador:27 #ados:31 #adua:38 #affo:40 #afte:-50 #agar:30 #agua:-87 #ague:38 #ahor:218 #aiga:25 #aigo:62
#aire:-28 #airp:52 #ajes:-33 #alat:27 #alga:57 #alin:41 #alle:-46 #alon:-27 #alqu:-37 #alre:-27 #alri:-56 #alta:26
#amen:-49 #amil:34 #amos:110 #ampe:44 #anan:-47 #anas:87 #ance:94 #ando:133 #anej:-106 #aniz:82 #anks:-54 #anos:-28
#anot:28 #anta:-52 #ante:70 #anti:82 #anto:-30 #apen:46 #appe:-40 #appy:-54 #apun:-27 #aqui:-32 #arca:-66 #arch:55
#arde:-41 #aren:36 #arge:-27 #aria:-35 #ario:42 #arke:63 #arly:-25 #aron:-165 #arve:40 #arzo:126 #asad:-90 #asan:32
#ason:55 #asse:-31 #aste:26 #ater:36 #athe:49 #atio:72 #augu:31 #auto:-61 #aver:40 #avia:29 #avin:125 #avis:212
#avor:-49 #away:-81 #aybe:113 #ayda:77 #baby:38 #back:-38 #ball:29 #band:47 #bank:-30 #banm:25 #baro:-39 #belt:25
#bett:38 #betw:37 #biar:-30 #bien:58 #bier:-32 #blam:59 #blan:-25 #blem:-32 #blen:37 #boda:29 #body:-40 #bols:-58
#bonu:45 #book:26 #boss:47 #bout:54 #brar:-58 #brer:26 #bscr:-28 #budg:60 #buen:31 #busc:79 #busy:131 #cabe:72
#caci:41 #call:-44 #came:-44 #canc:57 #cant:127 #care:-37 #cati:43 #cele:54 #cena:49 #chan:-31 #char:-33 #chec:223
#ched:31 #choo:55 #cias:-48 #cion:34 #cker:-28 #clas:-31 #cole:-34 #come:39 #comm:43 #como:-56 #conf:76 #cool:-25
#cort:71 #cost:-34 #coun:-38 #ctob:48 #cual:-45 #cuar:41 #cuen:-39 #cuer:49 #cupa:64 #dame:32 #days:101 #ddle:69
#deal:32 #deja:40 #deje:261 #dela:97 #deme:87 #depl:44 #desp:35 #dget:60 #dias:55 #dier:-35 #digo:215 #dimo:-74
#dine:120 #dios:45 #dire:114 #dont:58 #drop:-47 #dule:34 #each:41 #eali:36 #earl:-29 #earn:30 #easo:55 #eath:63
#ebod:-32 #ebre:25 #ecar:55 #eces:-26 #ecib:-30 #ecio:-50 #ecks:40 #ecue:46 #edal:-33 #edan:-28 #eded:-27 #edes:-59
#edul:34 #eede:-27 #eeks:35 #eels:-29 #eemb:-57 #egan:-49 #egre:47 #egue:85 #egun:77 #ejam:79 #ejan:-122 #ejar:-55
#ejel:-29 #ejem:158 #ejen:-46 #ejor:54 #elan:106 #eliz:-50 #elva:64 #elvo:34 #eman:34 #embe:51 #embo:-57 #embr:41
#emin:41 #emos:57 #empo:107 #empr:-32 #enas:44 #encu:-25 #endi:-127 #ends:34 #enen:-66 #ener:-39 #enev:-89 #enga:-42
#engi:-49 #engo:116 #enme:66 #enou:-28 #ensa:168 #ento:173 #entr:-39 #epla:-30 #eplo:44 #erar:-46 #erco:-44 #erem:25
#eren:-34 #eres:-47 #eria:88 #ermi:82 #erne:-35 #eron:-98 #erse:68 #escr:26 #esda:-33 #eses:85 #espe:-74 #espo:-36
#esta:-60 #este:31 #esto:25 #etim:-78 #ette:36 #etwe:37 #even:-27 #ever:-211 #eves:-48 #evis:70 #exts:-79 #falt:32
#fami:34 #favo:-49 #feli:-52 #feri:98 #ffic:-44 #ffor:37 #fice:-42 #fies:28 #fina:68 #fine:-25 #firm:91 #firs:85
#fixe:-33 #ford:40 #fren:-79 #frid:-70 #frio:40 #fter:-50 #fund:-29 #gast:35 #gave:-26 #gery:56 #gets:31 #ghts:-30
#ghty:-42 #gimm:42 #gine:-50 #give:90 #givi:-28 #goin:-27 #grac:-49 #grea:-27 #gres:48 #guan:-71 #guen:54 #gues:-31
#guno:45 #gunt:94 #guys:-27 #habl:157 #hace:-89 #hank:-48 #happ:-73 #harg:-28 #harv:40 #have:57 #head:-29 #heca:61
#heck:64 #heco:96 #hedu:34 #heel:-26 #hene:-89 #here:-54 #hese:47 #hici:-39 #hift:-28 #hink:45 #hits:26 #hold:85
#home:45 #hone:-62 #hool:69 #hora:173 #hose:-53 #hosp:45 #houg:49 #hous:33 #hubb:74 #hurs:-64 #husb:29 #iaro:-25
#ibir:-35 #ibra:-25 #ices:-54 #icey:-36 #icie:-41 #iday:-56 #iddl:73 #iemb:32 #iemp:27 #iene:-106 #ierc:-35
#iero:-108 #ight:152 #igue:25 #iles:37 #imav:40 #imer:26 #imme:42 #imos:-90 #inal:67 #ince:36 #inco:34 #inda:63
#iner:114 #info:-25 #ings:49 #ingu:39 #insu:44 #inte:-75 #ione:50 #irmo:96 #irpo:52 #irst:85 #isar:-35 #isen:42
#isit:45 #ital:27 #ivin:-49 #ixed:-33 #jale:-56 #jame:73 #jand:-109 #jelo:-29 #jeme:155 #juev:-49 #june:139 #juni:27
#junt:173 #just:63 #kick:29 #kill:27 #kind:80 #king:-40 #know:70 #labo:46 #lace:-38 #lama:-32 #lamb:29 #lame:-34
#lamo:48 #lant:94 #last:-149 #late:34 #leep:33 #legu:90 #lela:28 #lend:35 #lenm:39 #lent:-33 #lets:64 #levo:66
#ligh:-71 #ling:55 #list:-25 #live:-32 #llam:-73 #lled:-30 #lleg:72 #llev:60 #lock:-33 #lone:-25 #look:113 #lost:28
#loye:28 #lqui:-37 #lrea:-27 #lrig:-56 #ltan:35 #ltim:-49 #lueg:94 #luga:-49 #lune:-70 #make:-59 #mane:-110 #mart:-36
#marz:126 #mati:-50 #mave:40 #mayb:113 #mayo:36 #mbia:-42 #mbio:34 #mbol:-57 #mbre:32 #mebo:-32 #mejo:54 #mell:-28
#menm:-41 #mens:-51 #ment:244 #mero:39 #mese:85 #meti:-92 #midd:73 #mier:-37 #mily:35 #mind:32 #mine:63 #mmer:60
#mmit:44 #mome:270 #mond:-80 #mone:29 #mont:32 #more:-52 #morn:-26 #morr:43 #movi:68 #mped:43 #mpor:59 #mpre:-49
#much:55 #myse:-29 #nals:44 #nana:-47 #ncel:53 #ncen:48 #nces:-44 #nche:-31 #ncom:25 #ncue:-25 #ndam:31 #ndar:31
#nder:-38 #ndim:-72 #near:80 #need:91 #neja:-107 #nero:76 #neve:-110 #next:29 #nfir:94 #ngan:-94 #nged:-26 #ngin:-50
#ngun:39 #nigh:55 #noch:37 #noug:-28 #novi:38 #nsaj:-50 #nsan:56 #nsar:231 #nsur:45 #ntam:43 #ntan:32 #ntar:91
#nten:76 #nter:-86 #nths:33 #ntil:34 #ntit:85 #ntra:44 #ntre:-75 #nudg:47 #nuev:29 #numb:-42 #nume:-25 #nunc:-47
#obar:-43 #ober:45 #oble:-27 #obra:-66 #obre:32 #oche:33 #ocke:-33 #octo:60 #ocup:45 #oday:92 #offi:-42 #oing:-37
#oint:-30 #ojal:30 #okin:-30 #oles:-40 #olso:-57 #omat:-33 #omeb:-32 #omen:228 #omes:82 #omet:-103 #ommi:44 #omor:45
#once:135 #onda:-83 #onde:-27 #ondo:-57 #oney:30 #onfi:87 #onig:92 #onth:36 #onto:-49 #onus:45 #ooki:-29 #ooks:27
#open:-56 #oper:69 #orad:60 #orar:54 #orro:46 #orry:-79 #orth:-50 #orto:48 #ospi:45 #otal:-35 #othe:26 #ough:38
#ould:-62 #ount:-47 #over:48 #ovie:42 #ovin:74 #oxim:-53 #oyed:28 #paci:-32 #paga:29 #pagu:38 #paid:58 #para:124
#park:50 #pasa:-27 #pase:96 #pass:-148 #payd:77 #peda:-33 #pena:33 #pens:183 #pera:43 #phon:-68 #pita:27 #plac:-33
#plat:34 #ploy:44 #poin:-29 #pond:-62 #pora:60 #port:50 #poso:28 #pped:-29 #prec:-30 #preg:94 #pren:-42 #pric:-104
#prim:50 #pron:-49 #prox:-50 #pued:-79 #pues:-25 #punt:-34 #qued:-34 #quie:-64 #quin:40 #quiz:47 #rada:70 #rade:-78
#radu:38 #raig:78 #rain:-27 #rame:26 #ramo:34 #ranc:44 #rand:-47 #rari:51 #raro:-35 #rcol:-35 #rdad:31 #rdem:30
#reac:42 #reca:-30 #reci:-65 #recu:58 #reem:-57 #refu:-25 #rega:-30 #regr:48 #regu:89 #remi:39 #rend:-42 #reno:-65
#rent:39 #repl:-44 #rese:43 #resp:-77 #ress:-25 #reta:29 #revi:69 #rgan:74 #rger:59 #rice:-96 #rida:-65 #righ:87
#rima:39 #rime:26 #ring:-56 #rite:34 #rked:59 #rmin:74 #rned:-27 #rnes:-30 #rnin:-33 #road:40 #roba:-41 #ront:-65
#roug:32 #roxi:-53 #rpor:50 #rque:-42 #rren:-26 #rrow:42 #rsda:-51 #rtes:-32 #rtos:-28 #ruen:-27 #rves:40 #sado:-53
#saje:-49 #sale:-35 #salg:44 #sand:42 #save:59 #savi:140 #says:68 #sban:29 #sche:34 #scho:69 #sday:-84 #seas:132
#self:-39 #sema:27 #seme:44 #senm:44 #sept:37 #sera:96 #shif:-28 #sick:-29 #sign:-43 #sigu:27 #skip:-40 #slee:33
#slow:41 #smel:-28 #snow:33 #some:-97 #sorr:-76 #spac:-39 #sper:-64 #spon:-73 #spos:27 #ssed:-49 #stan:-71 #stas:31
#sted:-100 #ster:51 #stil:-66 #stoy:59 #subs:-28 #summ:60 #sund:59 #sura:45 #sure:-83 #surg:54 #swam:44 #tado:44
#take:-124 #talk:50 #tall:-39 #tame:40 #tand:39 #tant:33 #tari:-29 #tech:26 #tede:-58 #tell:65 #temp:40 #tena:33
#teng:97 #tenm:25 #tere:-44 #term:78 #text:-49 #than:-58 #that:-76 #them:-34 #then:203 #ther:27 #thes:47 #they:-48
#thin:69 #this:54 #thos:-45 #thou:76 #thur:-66 #tiem:59 #tien:-92 #tigh:106 #till:75 #tima:-50 #time:53 #ting:-25
#tion:60 #tira:-29 #tito:95 #tobe:48 #toda:92 #toma:-29 #tomo:40 #toni:91 #took:-55 #tota:-35 #town:64 #trad:-49
#trai:77 #treg:-46 #trip:-43 #true:-27 #tter:33 #tues:-42 #twee:37 #twic:-40 #ualq:-37 #uand:28 #uant:-99 #uare:47
#ubby:74 #ubre:26 #ubsc:-28 #ucho:70 #udge:106 #ueda:-60 #uede:-66 #uego:93 #uelt:-33 #uelv:116 #uena:-31 #uent:-40
#uerd:49 #uesd:-26 #uess:-31 #uest:-43 #ueve:-60 #ugar:-50 #ugus:31 #uier:-65 #uinc:52 #uite:28 #uiza:47 #ulti:-50
#umbe:-43 #umer:-25 #umme:60 #unas:80 #unca:-46 #unda:56 #unes:-70 #unos:133 #unta:118 #unte:58 #unti:46 #unto:48
#upad:64 #uran:46 #urge:47 #ursd:-51 #usba:29 #usco:68 #uste:-94 #utom:-47 #vaca:106 #vemo:42 #vend:-107 #vera:50
#vers:68 #vest:40 #viem:38 #ving:166 #vise:59 #visi:44 #viso:159 #vuel:63 #wait:29 #wamp:44 #weat:53 #week:101
#ween:37 #well:-26 #went:-64 #were:55 #whee:-26 #when:150 #wher:-34 #wice:-40 #wife:35 #will:118 #wint:-26 #work:-76
#wort:-52 #woul:-53 #writ:42 #xima:-58 #yday:77 #yeah:-47 #year:-28 #your:-104 #ysel:-29 %again_later:389
%again_later%agree:-43 %again_later%away:173 %again_later%busy:125 %again_later%call_off:88 %again_later%car:146
%again_later%car_part:-75 %again_later%do_it:150 %again_later%doubt:26 %again_later%elsewhere:31
%again_later%fails:43 %again_later%family:120 %again_later%leave_me:66 %again_later%lift:-82 %again_later%machine:-26
%again_later%money:74 %again_later%noise:-58 %again_later%on_way:-56 %again_later%opening:-46
%again_later%pay_day:196 %again_later%phone:-94 %again_later%place:-60 %again_later%question:-28
%again_later%refuse:173 %again_later%season:51 %again_later%shake:-61 %again_later%start_again:-28
%again_later%thanks:-118 %again_later%who:-42 %agree:-75 %agree%away:-29 %agree%bring:-164 %agree%busy:-56
%agree%do_it:56 %agree%doubt:-64 %agree%family:47 %agree%gone_car:42 %agree%message:52 %agree%on_way:-51
%agree%question:-100 %agree%refuse:176 %agree%thanks:-26 %away:305 %away%bad:26 %away%bring:63 %away%call_off:105
%away%car:48 %away%car_part:-80 %away%doubt:50 %away%elsewhere:41 %away%gone_car:-29 %away%how_long:-37
%away%leave_me:-73 %away%lift:-62 %away%noise:-31 %away%on_way:-51 %away%pay_day:35 %away%phone:55 %away%question:171
%away%refuse:-122 %away%season:48 %away%shift_it:31 %away%start_again:30 %bad%bring:53 %bad%busy:54 %bad%meaning:-26
%bad%refuse:-28 %bring%busy:29 %bring%call_off:48 %bring%do_it:-30 %bring%doubt:83 %bring%elsewhere:-31
%bring%gone_car:-26 %bring%money:63 %bring%on_way:30 %bring%pay_day:54 %bring%phone:31 %bring%question:-83
%bring%refuse:59 %bring%season:75 %bring%shift_it:33 %bring%start_again:29 %busy:208 %busy%fails:31
%busy%gone_car:110 %busy%how_long:91 %busy%lift:33 %busy%on_way:-31 %busy%pay_day:55 %busy%phone:-36
%busy%question:29 %busy%season:51 %busy%shift_it:-57 %busy%start_again:60 %busy%wrong_one:33 %call_off:36
%call_off%car:-69 %call_off%car_part:-39 %call_off%doubt:35 %call_off%elsewhere:-56 %call_off%family:-28
%call_off%how_long:33 %call_off%leak:-25 %call_off%leave_me:-37 %call_off%lift:-104 %call_off%message:-92
%call_off%money:45 %call_off%odometer:-41 %call_off%phone:-50 %call_off%question:57 %call_off%refuse:55
%call_off%season:208 %call_off%shift_it:-71 %call_off%thanks:34 %car:-90 %car%car_part:-45 %car%family:59
%car%gone_car:-65 %car%lift:26 %car%money:-31 %car%odometer:37 %car%pay_day:-36 %car%place:67 %car%start_again:-26
%car_part:-164 %car_part%fails:-34 %car_part%leave_me:43 %car_part%money:64 %car_part%noise:-40 %car_part%on_way:-38
%car_part%pay_day:-37 %car_part%phone:-59 %car_part%question:-66 %car_part%refuse:84 %car_part%season:75
%car_part%shake:-42 %car_part%smoke_smell:-27 %car_part%start_again:-37 %do_it:-136 %do_it%doubt:47
%do_it%elsewhere:-47 %do_it%gone_car:-34 %do_it%message:64 %do_it%pay_day:-98 %do_it%question:29 %do_it%refuse:-27
%do_it%season:-44 %do_it%start_again:27 %do_it%wrong_one:-60 %doubt:139 %doubt%elsewhere:-63 %doubt%family:58
%doubt%how_long:-27 %doubt%lift:29 %doubt%message:36 %doubt%money:-60 %doubt%odometer:102 %doubt%on_way:79
%doubt%pay_day:29 %doubt%question:-28 %doubt%refuse:77 %doubt%season:114 %doubt%shift_it:-50 %doubt%staff:30
%doubt%wrong_one:-94 %elsewhere:-74 %elsewhere%gone_car:-30 %elsewhere%lift:30 %elsewhere%message:-39
%elsewhere%odometer:71 %elsewhere%phone:-33 %elsewhere%refuse:-39 %elsewhere%season:36 %elsewhere%staff:-44
%elsewhere%wrong_one:-51 %fails:-81 %fails%money:26 %fails%pay_day:26 %fails%refuse:-25 %family%money:30
%family%on_way:26 %family%phone:28 %family%question:32 %family%refuse:-61 %family%start_again:91 %family%wrong_one:47
%gone_car:-163 %gone_car%how_long:79 %gone_car%money:33 %gone_car%pay_day:-44 %gone_car%question:37
%gone_car%refuse:66 %gone_car%shift_it:-52 %how_long:44 %how_long%lift:39 %how_long%pay_day:42 %how_long%question:-31
%how_long%refuse:75 %how_long%shift_it:-62 %leak:-49 %leave_me:-39 %leave_me%message:-51 %leave_me%money:48
%leave_me%odometer:82 %leave_me%opening:50 %leave_me%pay_day:-42 %leave_me%place:51 %leave_me%question:37 %lift:-109
%lift%money:-32 %lift%pay_day:-105 %lift%season:-141 %lift%shift_it:36 %lift%wrong_one:49 %machine:-55 %meaning:-26
%meaning%pay_day:49 %message:-107 %message%on_way:43 %message%pay_day:-30 %message%question:36 %message%refuse:-52
%message%shift_it:-29 %message%start_again:-101 %message%thanks:-40 %message%wrong_one:-70 %money%odometer:-56
%money%pay_day:47 %money%place:40 %money%refuse:39 %money%season:106 %money%shift_it:-46 %money%start_again:-44
%noise:-109 %noise%question:-60 %noise%refuse:-27 %noise%start_again:-26 %odometer%opening:54 %odometer%pay_day:-35
%odometer%phone:-49 %odometer%question:77 %odometer%refuse:-28 %odometer%shift_it:112 %odometer%staff:45 %on_way:-91
%on_way%pay_day:47 %on_way%place:-35 %on_way%question:-61 %on_way%season:58 %on_way%start_again:34 %opening:-42
%opening%place:-28 %opening%question:-59 %pay_day:300 %pay_day%question:237 %pay_day%refuse:142 %pay_day%season:-85
%pay_day%shift_it:63 %pay_day%start_again:35 %pay_day%wrong_one:87 %phone:-201 %phone%question:-30 %phone%refuse:-27
%phone%season:138 %phone%shift_it:-48 %phone%staff:-49 %phone%wrong_one:60 %place:-33 %place%question:-25
%place%refuse:70 %place%season:34 %question:-64 %question%season:205 %question%shake:-66 %question%shift_it:-28
%question%smoke_smell:-31 %question%who:-61 %question%wrong_one:39 %refuse:-145 %refuse%season:217
%refuse%shift_it:-31 %refuse%staff:-54 %refuse%start_again:-93 %refuse%thanks:-69 %refuse%wrong_one:-30 %season:346
%season%shift_it:148 %season%start_again:76 %season%thanks:32 %season%wrong_one:104 %shake:-99
%shift_it%start_again:-29 %shift_it%wrong_one:-55 %smoke_smell:-102 %staff:-47 %start_again:-74
%start_again%wrong_one:-31 %thanks:-58 %who:-97 %wrong_one:-37 @?:-232 @after_visit:-192 @car:-56 @confirm:-317
@confirm_stop:-119 @later:431 @nothing:-247 @odometer:36 @offers:-136 @reading:-146 @time:-162 @times:-128
@walk_in:-98 ^_a:-32 ^_about:-39 ^_after:174 ^_aguanta:-104 ^_ahora:128 ^_ahorita:28 ^_al:117 ^_ando:123 ^_any:-38
^_apenas:43 ^_asi:-36 ^_ask:97 ^_at:114 ^_call:-58 ^_can:-102 ^_cant:108 ^_check:27 ^_como:-39 ^_count:-50
^_cuando:144 ^_cuanto:-70 ^_de:37 ^_dejame:52 ^_deje:193 ^_dejeme:155 ^_deme:42 ^_despues:57 ^_do:-94 ^_dont:69
^_el:-69 ^_en:115 ^_end:-41 ^_entre:-28 ^_es:-37 ^_eso:-40 ^_espereme:25 ^_estoy:93 ^_feliz:-40 ^_first:-63 ^_for:-30
^_get:-43 ^_gimme:43 ^_give:51 ^_go:-44 ^_got:123 ^_gracias:-44 ^_hablenme:40 ^_hace:-36 ^_had:-33 ^_hang:29 ^_hmm:28
^_hold:71 ^_how:-96 ^_i:-52 ^_ill:106 ^_is:-68 ^_it:-66 ^_just:68 ^_la:-130 ^_le:-69 ^_let:180 ^_llamenme:-30
^_lo:147 ^_luego:58 ^_mas:192 ^_maybe:84 ^_me:-168 ^_mejor:-26 ^_might:-25 ^_money:93 ^_my:-113 ^_need:142
^_ninguno:27 ^_not:232 ^_oh:-30 ^_ok:-61 ^_on:53 ^_once:82 ^_opt:-78 ^_otro:82 ^_please:-54 ^_por:-25 ^_puedo:-114
^_que:-88 ^_ring:-26 ^_se:-76 ^_si:-118 ^_sign:-31 ^_soon:36 ^_sorry:-57 ^_still:-27 ^_sure:-191 ^_swamped:44
^_tengo:99 ^_text:62 ^_the:-138 ^_this:-42 ^_todo:26 ^_too:65 ^_traded:-32 ^_try:97 ^_va:53 ^_wait:40 ^_were:60
^_what:-99 ^_when:183 ^_whenever:-49 ^_why:-33 ^_will:28 ^_y:-36 ^_ya:27 ^_yeah:-39 ^_yes:-74 ^_yo:148 ^_you:-122
a__de:-25 a__is:-40 a__me:32 a__mil:122 a__now:-25 a__of:-51 a__or:48 a__thing:38 a__time:78 a__weeks:87 a_bit:78
a_call:-28 a_cobrar:-25 a_few:95 a_good:83 a_las:31 a_los:70 a_mi:-76 a_month:37 a_que:49 a_week:-29 a_while:34
abiertos:-27 about:58 about_it:85 acabe:67 acabe_la:46 add:-35 adelante:41 afford:40 afford_it:43 after:-43
after_$:-99 after__day:37 after__th:-33 after_all:-26 after_the:27 again_$:-144 again_in:85 again_on:25 aguanta:-106
ahi:33 ahora:203 ahora_$:42 ahora_no:165 ahorita__puedo:29 ahorita_ando:29 ahorita_no:88 aire:-28 aire_$:-26
airport:52 airport_$:55 al:26 al__que:25 al_rato:64 al_trabajo:-38 all:-84 all_$:-48 already:-27 an:-29 and:-117
and_not:-36 anda:-33 andamos:27 ando:207 ando__de:28 ando_bien:102 ando_en:39 ando_fuera:53 ano:43 ano_nuevo:26
another:29 any:-67 apenas:46 are:52 are_$:-25 are__the:61 are_in:75 are_you:-27 as_well:-28 asi:-100 asi_$:-42
ask:456 ask__again:76 ask__in:57 ask__when:27 ask_again:25 ask_me:277 ask_my:47 at:199 at_$:33 at__calendar:34
at__moment:73 at__time:29 at_k:175 at_the:92 at_this:27 august:31 avisar:-32 avisenme:46 aviso:132 aviso_$:120
away:-81 away_$:-41 baby:37 back:-37 back_$:-86 back__the:-39 back__you:90 back_from:53 back_in:29 back_out:-27
back_to:65 bank:-29 be:-84 better:38 better_$:42 between:37 bien:49 bien_$:-44 bit:78 boda:29 bonus:45 boss:47
boss_$:37 budget:60 buen:53 bug:34 bug_me:34 bus:-26 busco:68 busco_$:66 busy:131 by_$:-32 calendar:37 calendar_$:26
call:-38 call_$:-26 call_me:-71 cambiaron:-25 cambio:35 came:-41 can:-103 can__get:-41 can__me:-31 can__tell:38
can__wait:-74 can_it:-79 cancel_$:-28 cancele:51 cancele_y:25 cant:123 cant__in:-30 cant__it:28 cant__the:31
cant_afford:41 cant_come:-35 care:-34 care_of:-33 carro_esta:27 chance:53 chances:-56 chances_$:-56 checar:58
check:74 check__me:50 check_engine:-45 check_with:71 checks:40 checks_$:42 checo:96 cobraron:-36 cobre:43 comes:82
comes_$:30 commit:44 como:-55 con:50 con_el:29 con_mi:98 confirmo:96 confirmo_$:90 corto:49 corto_de:45 cost:-33
count:-52 count__in:-41 count_me:-52 cualquier:-28 cuando:29 cuando__a:41 cuando__de:57 cuando__la:79
cuando__vuelta:-27 cuando_doy:-27 cuando_freno:-42 cuando_llegue:50 cuando_lo:-81 cuando_me:58 cuando_regrese:42
cuando_salga:29 cuando_tenga:54 cuando_termine:61 cuando_vuelva:38 cuanto:-25 cuanto__van:-25 cuanto_me:-63
cuanto_se:26 da:-33 dan:26 day_after:-37 days:120 days_$:105 de:96 de__no:72 de_dinero:52 de_eso:26 de_las:-67
de_los:26 de_mes:-29 de_pagar:29 de_vacaciones:33 deja:37 dejame:73 dejar:-27 deje:177 dejelo:-29 dejeme:155 del:-46
deme:57 depends_on:25 deployed:28 despues:35 despues_$:111 despues__las:-74 despues_de:-49 despues_del:-78 di:-30
dia:42 dia_$:-31 dias:55 diciembre_$:-32 did:-32 digo:219 digo_$:177 dinero:122 dinero_$:121 dios:46 dios_quiere:29
do:-67 do__need:-37 do_i:-52 do_it:80 do_not:-33 do_you:-29 dont:58 dont__it:54 dont__me:-36 dont_have:59
dont_know:71 dos:-27 down:28 down__road:30 down_the:32 doy:-30 doy_vuelta:-27 drive__a:35 drive_for:37 drop:-43
easter_$:26 el:28 el__despues:-60 el__mes:80 el__pasado:-54 el_aire:-25 el_ano:34 el_aviso:-34 el_carro:32
el_dinero:29 el_income:26 el_jueves:-30 el_lunes:-57 el_mes:-27 el_momento:51 el_otro:81 el_pedal:-28 en:248
en__dias:67 en__me:-28 en__noche:35 en__por:39 en__que:28 en__si:32 en__tarde:-25 en__y:35 en_diciembre:-27
en_enero:-26 en_la:-58 en_marzo:67 en_mayo:25 en_mil:72 en_noviembre:27 en_otro:-28 en_paz:-28 en_que:-38 en_unos:87
end:-36 end__the:-45 end_of:-34 enero:-42 enero_$:-60 engine:-49 enough:-28 entre:-37 entre_semana:-30 entregan:-38
entregan_$:-37 es:-67 esa:-25 escribanme:25 escribo_$:34 escuela_$:29 ese:-34 eso:-61 eso_$:-30 espacio:-38
espacio_$:-37 esperar:-65 espereme:25 espero:-38 esposo:28 esposo_$:25 esta_semana:37 estan:-57 estan_abiertos:-26
este_mes:47 estoy:50 estoy_bien:-46 estoy_de:59 estoy_en:31 estoy_manejando:-84 ever:-92 ever_$:-72 ex:-63 ex__it:-26
ex_wife:-31 fall_$:26 faltan:36 family:35 favor:-51 febrero:26 feel:30 feel_like:36 feliz:-50 feliz_navidad:-26
feria:98 feria_$:85 few:105 few_weeks:46 fiestas:28 fin:-42 fin_de:-37 finals:44 first:85 first_$:126 fixed:-33
for:73 for_a:35 for_it:154 for_me:-107 for_now:54 for_sure:-35 freno:-43 freno_$:-26 friday:-65 frio:40 frio_$:40
fuera:25 fuera_$:26 gave:-26 get:68 get__off:-26 get__on:54 get__to:112 get_a:-67 get_back:137 get_it:-33 get_me:-45
get_my:31 get_paid:86 get_the:-46 get_through:31 gets:31 gimme:42 gimme_a:44 give:89 give__a:64 give_me:73 go:-101
go_away:-32 going:-27 going_on:49 going_to:-49 got:105 got__wait:31 got_a:-30 got_it:-35 got_to:190 gracias:-48
gracias__el:-32 gracias_por:-54 guess:-31 guys:-25 hablamos:52 hablamos_$:41 hablenme:39 hablo:109 hablo_$:91
hace:-87 hace_un:-38 had_to:-32 hang:27 happy:-54 harvest:40 has:-39 has_it:-39 has_the:47 hasta__cobre:27
hasta__hora:-42 hasta__me:36 hasta_que:115 have:44 have_time:104 hit:96 hit__up:84 hit_k:29 hit_me:84 hits:26 hmm:28
hold:76 hold_off:59 hold_that:38 home:45 hora:-77 horario:49 horario_$:27 horas_$:-29 hospital:27 hospital_$:36
how:-66 how_much:-39 hubby:71 husband:29 i:-57 i__a:-38 i__it:-34 i__like:36 i__out:-57 i__paid:87 i__the:-30
i__to:42 i__you:40 i_can:37 i_cant:-39 i_feel:31 i_get:57 i_need:101 i_think:-56 i_want:-31 i_will:26 if:-32 ill:79
ill__a:-27 ill__back:37 ill__it:30 ill__my:-58 ill__out:28 ill__to:26 ill__you:129 ill_call:90 ill_do:67 ill_get:32
ill_let:49 ill_need:-29 ill_pass:-102 ill_take:-67 im:120 im__of:72 im__the:37 im_back:33 im_down:-43 im_free:27
im_out:76 im_still:-43 in:167 in_$:-143 in__bit:76 in__couple:-27 in__fall:27 in__few:26 in__middle:76 in__spring:31
in__weeks:-32 in_a:88 in_another:56 in_june:105 in_march:31 in_may:35 in_october:33 in_the:37 in_two:-62 income:25
insurance:45 interested:-27 is:99 is__at:56 is__for:32 is__the:-40 is_on:-44 is_over:38 is_this:-31 is_tight:94
it:-123 it_$:147 it__after:-28 it__at:-27 it__i:70 it__last:-32 it__now:44 it__to:-33 it_at:43 it_back:-52 it_be:-29
it_for:55 it_in:-84 it_is:37 it_myself:-25 it_now:-80 it_to:-41 it_wait:-71 it_when:60 jale:-56 jale_$:-54 job:54
job_so:38 jueves:-48 june:139 june_$:104 junio:27 juntar:63 junto:45 just:65 just__a:27 just__my:29 just_had:65
just_not:31 k:127 k_$:145 k_miles:-31 kinda:67 know:81 know_$:59 know__is:59 know_it:62 la:77 la__de:31 la__en:-45
la__pasada:-27 la__quincena:29 la__semana:-36 la__vez:-82 la_boda:29 la_noche:41 la_primavera:26 la_proxima:-58
la_quincena:27 la_semana:-36 la_tarde:-32 la_temporada:60 la_ultima:-39 labor:46 labor_day:44 las:36 las_$:-48
las__millas:37 las_fiestas:29 las_horas:39 las_mil:84 last:-148 last_month:-82 later:30 later_$:97 later_one:-46
later_time:-43 le:286 le__a:-40 le_aviso:68 le_digo:91 le_faltan:35 le_hablo:78 les:346 les_aviso:73 les_digo:54
let:201 let__look:58 let__see:57 let_me:155 let_you:81 lets:64 lets__in:32 lets__it:-34 lets_out:48 light:-40
like_a:-29 like_it:26 live:-30 llamenme:-41 llegue:96 llegue__las:29 llegue_a:58 llevo:66 llevo_$:48 lo__a:55
lo__cuando:33 lo__de:-35 lo__el:-34 lo__en:-52 lo__mi:26 lo__pronto:-37 lo_de:28 lo_entregan:-38 lo_llevo:68
lo_mas:-38 lo_robaron:-33 lo_tienen:-28 lo_trae:28 lo_vendi:-39 lo_voy:81 look:133 look__my:33 look_at:27
looks_like:26 los:76 los_$:36 los_mil:66 lost:28 lost_my:49 luego:94 luego__digo:32 luego_le:27 luego_les:50
lugar:-49 lugar_$:-43 lunes:-70 make:-55 make_it:-41 manana:-45 manejando:-110 marca:-52 march:65 march_$:29
martes:-35 marzo:126 marzo_$:46 mas:56 mas_$:-102 mas_adelante:132 mas_pronto:-44 mas_tarde:36 may:65 may_$:39
maybe:113 maybe_in:50 mayo:32 me:180 me_$:-189 me__about:28 me__al:-65 me__at:37 me__el:76 me__im:38 me__in:52
me__june:70 me__la:32 me__las:32 me__my:44 me__on:36 me__robaron:-26 me__this:-29 me__time:28 me__to:-51 me__week:94
me__what:39 me__when:-40 me__you:-40 me_about:29 me_after:38 me_again:91 me_at:31 me_back:-63 me_cobraron:-36
me_dan:27 me_in:109 me_llegue:30 me_lo:-61 me_look:58 me_marca:-63 me_next:97 me_now:-36 me_off:-32 me_on:-26
me_out:-34 me_paguen:43 me_see:57 me_some:29 me_then:121 me_tomorrow:42 me_up:67 me_van:-37 me_when:35 mejor:46
mejor_$:25 mensajes:-33 mes:-127 mes_$:-83 mes_pasado:-50 meses:64 meses_$:52 mi__y:42 mi_esposo:28 middle:73
middle_of:74 miercoles:-34 might__well:-26 might_as:-26 mil:246 mil_$:56 mil_millas:70 miles_$:30 millas_$:-30
moment:73 momento:197 momento_no:89 monday:-43 mondays:-37 money_$:-49 money__tight:91 money_is:98 month__so:51
month_is:-41 month_or:49 months:33 more:-37 morning_$:-25 moving:74 much_$:-34 much__it:25 mucho:70 muy:-48 my:81
my__back:-49 my__first:48 my__has:26 my__is:36 my__refund:49 my__so:36 my_boss:59 my_car:-61 my_chances:-56 my_ex:-31
my_job:52 my_refund:-28 my_schedule:88 my_tax:64 my_wife:40 myself:-29 myself_$:-26 nada_$:-38 near:82 near__car:70
near_the:69 need:133 need_to:173 needed:-27 new:61 new_year:28 next:29 ni:-64 ninguno:45 no:38 no_$:-73 no__ahora:76
no__el:30 no__tiempo:59 no__yet:108 no_es:47 no_gracias:67 no_me:-81 no_need:-34 no_not:59 no_por:123 no_puedo:130
no_se:58 no_tengo:96 no_traigo:83 noche:41 not:202 not_$:-40 not__me:-73 not__month:34 not__my:25 not__not:-62
not__now:93 not__this:67 not__to:-48 not__yet:94 not_a:47 not_ever:-71 not_for:-48 not_going:-56 not_happy:-28
not_in:-30 not_interested:-25 not_me:-79 not_my:-39 not_near:70 not_now:122 not_right:143 not_sure:151 not_this:33
not_til:27 not_till:31 not_today:107 not_worth:-50 not_yet:185 noviembre:38 now:208 now_$:79 now__me:31 nudge:47
nuevo:35 number:-41 nunca:-46 nunca_$:-25 october:48 october_$:35 of:-93 of__month:-42 of_the:-58 of_town:82
off__now:26 off_for:26 off_the:26 off_this:-25 office:-42 oh:-31 ok:-68 on:71 on_$:-26 on__now:33 on__refund:-67
on_it:59 on_my:53 once:121 once_the:50 one:-101 one_$:-49 ones:-29 only_at:38 open:-33 opt:-87 opt_out:-41 or_so:64
otra:-36 otra_quincena:25 otra_semana:30 otra_vez:-87 otro_$:-30 otro_dia:76 otro_taller:-27 out:-208 out_$:-121
out__town:85 out_the:-32 paguen:43 paid:58 paid_$:30 para:110 para__lo:-26 para_cuando:-46 para_el:61 para_la:28
para_nada:-29 para_que:-43 parked:59 pasa:25 pasada:-27 pasado:-61 pasado_$:-39 pasando:37 pase:95 pase_la:30
pass:-120 pass_$:-91 payday:72 payday_$:27 paz:-28 pedal:-32 pero:52 pero__que:29 phone:-60 please_$:46
please__me:-37 por:57 por__momento:55 por__no:37 por_ahora:157 por_favor:-43 por_lo:25 por_que:-54 por_una:34
preguntame:30 preguntenme:29 prices:-57 pricey:-36 primavera:40 primero:44 pronto:-49 proxima:-58 proxima_semana:-60
puedan:-26 puede:-32 puedo_$:62 puedo_esperar:-90 pues:-36 que__el:64 que__la:75 que__paguen:28 que_cobre:30
que_hora:-42 que_le:-33 que_no:-69 que_pase:84 quincena:49 quincena_$:42 quiza:33 rato_$:-31 reach:46 reach_out:39
recuerdeme:25 reembolso:-57 regrese:41 remind:60 remind__in:36 remind_me:61 replaced:-35 respondo:-41 revisit:46
right:153 right_$:-26 right_now:184 ring:-32 road:27 road_$:33 robaron:-38 robaron_en:-29 sabado:-36 sale:-33
salga:57 save:61 saving:138 say:-50 say_no:-45 says:68 says_$:52 schedule:33 schedule_$:-49 school:62 school__out:58
school_lets:58 se__cuando:-28 se__la:51 season:55 second_$:36 see:150 see__my:108 see_what:102 semana:-76
semana_$:-44 semanas:97 semanas_$:77 sera:97 sera_$:98 set:-30 shift:-29 si__quiere:29 si_dios:30 sick:-29 sign:-40
sign_me:-36 skip:-40 skip_it:-37 slow:42 slow_down:50 so_$:34 so__me:32 some:41 some_time:27 somebody:-32
sometime:-71 son:-38 sorry:-76 sorry_i:-44 spring_$:-43 still:-65 still__on:-68 still_waiting:-68 stop_$:-29
stop_by:40 su:-32 summer:60 sunday:68 sunday_$:65 sure:-80 sure__me:-53 surgery:56 swamped:44 take:-113
take__chances:-56 take_my:-57 tal:31 tal_vez:32 talk:52 talk__my:65 talk_to:38 taller:-37 tan_pronto:-26 tantito:37
tarde:-32 tarde_$:-45 tax:88 tax_$:-39 tax_refund:57 te:92 te__luego:-53 te_digo:70 te_escribo:-42 tell:66
tell_you:79 temporada:60 temporada_de:54 tenga:55 tengan:-73 tengo:117 tengo_tiempo:59 termine:73 text:58 text_$:31
text_me:34 texts:-79 texts_again:-61 th_$:42 thanks:-30 that:-75 that_$:-43 the:63 the__again:-57 the__are:77
the__ask:31 the__ill:58 the__is:42 the__of:90 the__one:-31 the__says:25 the__till:55 the__time:-40 the_airport:52
the_baby:27 the_car:115 the_fall:44 the_holidays:29 the_later:-63 the_middle:75 the_moment:73 the_month:-44
the_new:39 the_oil:28 the_road:43 the_schedule:-31 the_spring:29 the_texts:-53 the_week:-29 them:-34 them_$:-32
then:203 then_$:152 there:-33 there_$:-25 these:47 these_days:57 they:-43 thing_$:-52 things:59 think:36
think__it:126 think_about:78 this:54 this__i:26 this_is:-40 this_month:67 this_week:99 those:-45 though:26
though_$:32 through_the:29 thursday:-49 thursday_$:-26 tiempo:47 tiene:-35 tiene_millas:-48 tienen:-52 tienen_$:-38
tight:107 tight_$:62 til:104 til__th:47 til_my:34 til_the:56 till:152 time:140 time_$:66 time__week:65 to:102
to_$:-27 to__all:-27 to__for:77 to__it:-25 to__me:-42 to__on:39 to__the:60 to__to:35 to__up:56 to__what:60
to__wife:60 to_ask:73 to_be:-46 to_check:36 to_my:32 to_see:84 to_somebody:-30 to_talk:50 to_the:-99 to_wait:93
to_work:-28 to_you:60 todavia_no:75 today:92 today_$:83 tomorrow:46 tomorrow_$:69 tomorrow_after:-30 tonight:92
tonight_$:79 too_$:-25 too__for:-54 too_much:31 took:-55 took__of:-25 took_care:-25 town:65 town_$:54 traded:-40
traded__in:-31 traded_it:-31 trae_mi:28 traigo:81 trip:-39 try:183 try__in:40 try_me:179 tuesday:-26 twice:-40
two:-93 two_weeks:-78 ultima:-44 ultima_vez:-38 un:-128 un__mas:-78 un_mes:-98 una:-43 unas:80 unas_semanas:38
unos:133 unos_meses:36 until:35 until_the:34 up:194 up_$:-28 up__it:88 up_for:80 up_in:50 ustedes:-58 ustedes_$:-25
va:47 va__mil:40 va_en:77 vacaciones:51 vacation:59 vacation_$:71 van:-32 van__cobrar:-25 van_a:-25 vemos:42
vendi:-38 vendimos:-72 ver:55 ver__mi:78 ver_con:78 vez:-142 vez_$:-55 vez_me:-35 viernes:-30 voy_a:80 vuelta:-32
vuelta_$:-30 vuelva:41 wait:36 wait__my:37 wait_til:-29 wait_till:32 was:-70 we:52 we_are:61 weather:53 week:70
week_$:65 weeks:35 weeks_$:40 well:-26 went:-64 were:56 what__i:31 what__it:32 what_my:92 when:243 when__i:-44
when__is:30 when__it:-31 when__slow:51 when_do:-30 when_i:131 when_im:79 when_it:32 when_school:54 when_the:136
when_would:-52 when_you:-53 whenever:-89 where:-29 who:-57 who_you:-29 why:-61 why_not:-31 wife_$:35 wife__it:-33
will:118 will__you:63 will_get:53 will_it:-32 winter:-26 with_a:32 with_me:48 with_my:26 with_tax:-52 with_the:-34
work:-68 work_$:-88 worth:-52 would:-46 would__get:-38 would_i:-38 write:43 y:76 y_no:-40 y_te:50 ya_$:-25 ya__me:39
ya__pase:60 ya_les:117 ya_lo:-60 ya_no:-50 ya_que:127 ya_tengo:-28 yeah:-47 yes:-86 yet:365 yet_$:225 yet__me:63
yo:196 yo__aviso:68 yo_le:105 yo_les:110 yo_no:-25 you:-127 you_$:74 you__a:-40 you__i:27 you__im:44 you__my:-57
you_all:-26 you_are:-28 you_can:-40 you_get:-38 you_guys:-25 you_know:76 you_tomorrow:41 you_when:87 your:-100
"""
