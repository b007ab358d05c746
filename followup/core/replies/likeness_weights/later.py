"""What speaks for and against `later`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "later"
BIAS = -134
WEIGHTS = """\
#abad:-29 #abla:35 #ablo:98 #abor:33 #abou:46 #acab:60 #acac:42 #acat:56 #aced:-26 #acia:-46 #aded:-39 #adel:74
#ador:24 #ados:24 #adua:34 #affo:36 #afte:-44 #agua:-84 #ague:40 #ahor:234 #aigo:64 #aire:-25 #airp:49 #ajes:-26
#alat:27 #alga:40 #alin:37 #alle:-41 #alon:-24 #alqu:-33 #alri:-55 #ambi:-35 #amen:-49 #amil:36 #amos:102 #ampe:33
#anan:-32 #anas:47 #ance:61 #ando:129 #anej:-90 #anks:-51 #anos:-23 #anot:33 #anta:-44 #ante:68 #anti:39 #anto:-35
#anul:23 #apen:36 #appe:-38 #appy:-51 #aqui:-25 #arca:-60 #arch:37 #arco:31 #arde:-32 #aren:34 #arge:-32 #aria:-25
#ario:37 #arke:52 #aron:-133 #arzo:97 #asad:-49 #asan:22 #ason:43 #asse:-22 #aste:26 #ater:23 #athe:44 #atio:70
#augu:26 #auto:-43 #aver:30 #avia:34 #avin:123 #avis:155 #avor:-36 #away:-59 #aybe:100 #ayda:52 #baby:31 #back:-47
#bado:-28 #baje:24 #bajo:-24 #ball:31 #band:44 #baro:-24 #bett:36 #betw:32 #bien:42 #bier:-22 #blam:42 #blem:-24
#blen:38 #body:-33 #bols:-51 #book:25 #boss:49 #bout:45 #brar:-47 #brer:22 #bscr:-24 #budg:60 #buen:34 #busc:69
#busq:22 #busy:119 #cabe:52 #caci:33 #cada:-24 #call:-36 #camb:-32 #came:-39 #canc:47 #cant:119 #care:-33 #cati:44
#cele:37 #cena:45 #chan:-47 #char:-37 #chec:209 #ched:28 #choo:56 #cias:-44 #cion:26 #cked:-22 #cker:-29 #ckin:-22
#cole:-26 #comm:42 #como:-55 #conf:67 #cool:-23 #cort:53 #cost:-27 #coun:-35 #ctob:22 #cual:-41 #cuar:38 #cuel:25
#cuen:-30 #cuer:48 #cupa:65 #cupo:-24 #dame:29 #damo:22 #days:100 #ddle:62 #deal:27 #deja:40 #deje:251 #dela:82
#deme:63 #desp:43 #dget:60 #dias:58 #dier:-28 #digo:191 #dimo:-64 #dine:106 #dios:24 #dire:105 #dont:51 #drop:-40
#dule:31 #each:39 #eali:33 #earl:-23 #earn:27 #easo:43 #eath:61 #ebod:-28 #ebre:22 #ecar:50 #eces:-23 #ecib:-25
#ecio:-44 #ecks:36 #ecue:46 #edal:-32 #edan:-22 #eded:-26 #edes:-48 #edul:31 #eede:-26 #eels:-28 #eemb:-49 #efun:-24
#egan:-46 #egre:44 #egue:63 #egun:60 #ejam:69 #ejan:-100 #ejar:-47 #ejel:-33 #ejem:143 #ejen:-39 #ejor:38 #elan:91
#eliz:-48 #elta:-22 #elva:36 #elvo:32 #embe:38 #embo:-49 #embr:40 #emin:28 #emos:43 #empo:80 #empr:-26 #enas:40
#endi:-97 #ends:22 #enen:-63 #ener:-50 #enev:-87 #enga:-41 #engi:-45 #engo:104 #enme:59 #enou:-26 #ensa:154 #ento:148
#entr:-37 #epla:-26 #eran:57 #erar:-41 #erco:-27 #erem:26 #eren:-30 #eres:-46 #eria:84 #erio:23 #ermi:57 #eron:-71
#erse:61 #escu:22 #esda:-27 #eses:71 #espa:-29 #espe:-71 #espo:-23 #espu:31 #esta:-64 #este:31 #esto:30 #etim:-63
#ette:35 #etwe:32 #ever:-183 #eves:-40 #evis:57 #expe:-22 #exts:-69 #falt:22 #fami:36 #favo:-36 #feli:-50 #feri:87
#ffic:-38 #ffor:33 #fice:-36 #fina:47 #firm:85 #firs:75 #fixe:-30 #ford:36 #foun:-26 #fren:-65 #frid:-46 #frio:36
#fter:-44 #fund:-31 #gast:28 #gery:48 #gets:39 #ghty:-42 #gimm:29 #gine:-45 #give:76 #givi:-33 #goin:-25 #grac:-45
#grea:-26 #gres:45 #guan:-71 #guen:50 #guno:36 #gunt:71 #guys:-26 #habl:144 #hace:-84 #hanc:-22 #hank:-52 #happ:-69
#harg:-33 #have:65 #head:-23 #heca:54 #heck:70 #heco:84 #hedu:31 #heel:-26 #hene:-87 #here:-48 #hese:37 #hici:-28
#hink:28 #hits:27 #hold:92 #hone:-34 #hool:69 #hora:162 #hori:46 #hose:-37 #hosp:40 #houg:47 #hubb:79 #hurs:-52
#husb:26 #ibir:-33 #ices:-47 #icie:-32 #iday:-36 #iddl:65 #iemb:28 #iemp:27 #iene:-95 #ierc:-27 #iero:-84 #ight:160
#iles:41 #imav:30 #imer:29 #imme:29 #imos:-73 #inal:56 #ince:37 #inco:24 #inda:57 #iner:104 #ings:50 #ingu:31
#insu:42 #inte:-70 #ione:43 #irmo:89 #irpo:49 #irst:75 #isar:-25 #isen:23 #isit:36 #ital:34 #ivin:-56 #ixed:-31
#jala:25 #jale:-50 #jame:67 #jand:-90 #jaro:-27 #jelo:-33 #jeme:141 #juev:-43 #june:113 #juni:22 #junt:160 #just:56
#kill:26 #kind:69 #know:63 #ksgi:-26 #labo:33 #lace:-33 #lama:-25 #lame:-30 #lamo:29 #land:22 #lant:78 #last:-133
#late:29 #leep:28 #legu:66 #lend:26 #lenm:40 #lent:-25 #lets:51 #levo:58 #ligh:-63 #ling:38 #list:-31 #llam:-63
#lleg:58 #ller:-22 #llev:56 #lone:-23 #long:-23 #look:108 #lost:26 #lqui:-33 #lrig:-55 #ltan:25 #ltim:-49 #lueg:87
#luga:-45 #lune:-60 #make:-54 #mana:-28 #mand:-23 #mane:-92 #mart:-31 #marz:97 #mati:-34 #mave:30 #mayb:100 #mayo:34
#mbia:-30 #mbol:-50 #mbre:32 #mebo:-28 #mejo:38 #mell:-23 #menm:-40 #mens:-38 #ment:216 #mero:38 #mese:71 #meti:-71
#midd:65 #mier:-29 #mile:24 #mily:37 #mine:53 #mmer:55 #mmit:43 #mome:242 #mond:-67 #mone:24 #mont:32 #more:-51
#morr:39 #movi:62 #mped:33 #mpor:35 #mpre:-43 #much:49 #myse:-27 #nals:36 #nana:-31 #ncel:43 #ncen:45 #nces:-51
#nche:-30 #ndam:26 #nday:-34 #ndim:-62 #near:73 #need:75 #neja:-89 #nero:58 #neve:-109 #next:42 #nfir:88 #ngan:-93
#ngin:-45 #ngun:31 #nigh:48 #nksg:-26 #noch:32 #noug:-26 #novi:35 #nsaj:-37 #nsan:54 #nsar:203 #nsur:42 #ntam:23
#ntan:46 #ntar:66 #nten:61 #nter:-79 #nths:27 #ntil:45 #ntit:50 #ntra:37 #ntre:-69 #nudg:32 #nuev:22 #numb:-40
#nume:-32 #nunc:-37 #obar:-26 #oble:-26 #obra:-51 #obre:35 #oche:28 #ocke:-32 #octo:32 #ocup:42 #oday:82 #offi:-36
#oing:-33 #oint:-26 #ojal:29 #okin:-27 #oles:-33 #olso:-49 #omat:-32 #omeb:-28 #omen:204 #omes:59 #omet:-90 #ommi:43
#omor:39 #once:115 #onda:-71 #ondo:-51 #ones:28 #oney:24 #onfi:80 #onig:81 #onth:36 #onto:-45 #ooki:-26 #ooks:27
#open:-51 #oper:60 #orad:37 #orar:45 #orit:43 #orro:42 #orry:-66 #orth:-39 #orto:36 #ospi:40 #otal:-30 #othe:29
#oton:35 #otra:-27 #ough:23 #ould:-52 #ound:-26 #ount:-44 #oupl:25 #over:38 #ovie:40 #ovin:68 #oxim:-49 #paci:-29
#pagu:40 #paid:51 #para:115 #park:48 #pase:60 #pass:-127 #payd:52 #pect:-22 #peda:-32 #pena:23 #pens:160 #pera:30
#phon:-42 #pita:34 #plac:-28 #plan:22 #plat:30 #poin:-26 #pond:-34 #port:37 #pped:-25 #prec:-26 #preg:71 #pren:-23
#pric:-98 #prim:51 #prin:-23 #pron:-46 #prox:-46 #pued:-59 #punt:-27 #quea:-23 #qued:-30 #quie:-76 #quin:36 #quiz:45
#rada:48 #rade:-79 #radu:35 #raig:65 #ramo:33 #ranc:42 #rand:-29 #rano:35 #rari:45 #raro:-35 #rcha:-26 #rcol:-27
#rdem:30 #reac:35 #reci:-60 #recu:54 #reem:-49 #refu:-25 #rega:-35 #regr:45 #regu:67 #remi:26 #rend:-23 #reno:-53
#rent:32 #repl:-39 #rero:22 #rese:31 #resp:-47 #ress:-23 #revi:56 #rged:-24 #rger:51 #ribe:-23 #rice:-90 #rida:-41
#righ:95 #rima:30 #rime:29 #ring:-67 #rita:37 #rked:55 #rmin:61 #rned:-23 #rnin:-22 #road:33 #roba:-24 #ront:-67
#roxi:-49 #rpor:48 #rque:-29 #rren:-25 #rrow:39 #rsda:-45 #rtes:-30 #rtos:-22 #saba:-29 #sado:-26 #saje:-37 #sale:-27
#salg:35 #sand:25 #save:58 #savi:130 #says:53 #sban:26 #sche:31 #scho:69 #scue:23 #sday:-73 #seas:113 #self:-36
#seme:43 #senm:22 #sept:33 #sera:93 #sgiv:-26 #shes:24 #sick:-25 #sign:-37 #skip:-39 #slee:28 #slow:36 #smel:-23
#snow:24 #some:-89 #sorr:-63 #spac:-36 #sper:-69 #spit:32 #spon:-46 #spue:31 #ssed:-39 #stan:-71 #sted:-84 #ster:46
#stil:-56 #stoy:73 #subs:-24 #summ:55 #sund:33 #sura:42 #sure:-68 #surg:45 #swam:33 #tado:37 #take:-121 #tale:-22
#talk:42 #tall:-33 #tand:35 #tard:-37 #tede:-48 #tell:60 #temp:22 #tena:32 #teng:90 #tenm:25 #tere:-43 #term:65
#text:-51 #than:-58 #that:-74 #them:-26 #then:172 #thes:36 #they:-49 #thin:45 #this:32 #thos:-36 #thou:65 #thur:-54
#tiem:47 #tien:-80 #tigh:103 #till:28 #tima:-49 #time:50 #tion:56 #tira:-25 #tito:60 #tobe:22 #toda:93 #toma:-28
#tomo:39 #tonc:22 #toni:81 #tono:37 #took:-52 #tota:-30 #town:45 #trad:-48 #trai:69 #treg:-41 #trip:-32 #tter:36
#tues:-38 #twee:32 #twic:-26 #ualq:-33 #uand:35 #uant:-104 #uare:42 #ubby:79 #ubsc:-24 #ucho:67 #udge:92 #ueda:-50
#uede:-50 #uego:86 #uela:25 #uelt:-32 #uelv:85 #uent:-31 #uerd:48 #uesd:-22 #uest:-54 #ueve:-43 #uevo:22 #ugar:-45
#ugus:26 #uier:-74 #uinc:43 #uiza:45 #ulti:-49 #umbe:-41 #umer:-32 #umme:55 #unca:-37 #unda:26 #unes:-60 #unos:115
#unta:101 #unte:51 #unti:57 #unto:43 #upad:67 #uple:25 #uran:42 #urge:41 #ursd:-45 #usba:26 #usco:59 #usqu:22
#uste:-81 #utom:-32 #vaca:98 #vemo:39 #vend:-84 #vera:72 #vers:58 #viem:35 #ving:139 #vise:41 #visi:35 #viso:137
#vuel:37 #wamp:33 #weat:51 #week:75 #ween:32 #well:-28 #went:-37 #were:58 #whee:-26 #when:129 #wher:-25 #wice:-26
#wife:25 #will:88 #work:-62 #wort:-40 #woul:-48 #xima:-51 #yday:52 #yeah:-41 #your:-82 #ysel:-27 %again_later:358
%again_later%agree:-24 %again_later%away:156 %again_later%busy:116 %again_later%call_off:60 %again_later%car:94
%again_later%car_part:-59 %again_later%do_it:114 %again_later%doubt:25 %again_later%elsewhere:29
%again_later%fails:36 %again_later%family:104 %again_later%how_long:-24 %again_later%leave_me:77
%again_later%lift:-87 %again_later%money:66 %again_later%noise:-57 %again_later%odometer:33 %again_later%on_way:-39
%again_later%opening:-45 %again_later%pay_day:160 %again_later%phone:-85 %again_later%place:-56
%again_later%refuse:167 %again_later%season:40 %again_later%shake:-50 %again_later%shift_it:28
%again_later%start_again:-30 %again_later%thanks:-99 %again_later%who:-35 %agree:-74 %agree%away:-23
%agree%bring:-132 %agree%busy:-31 %agree%call_off:28 %agree%car_part:-25 %agree%do_it:42 %agree%doubt:-25
%agree%family:37 %agree%gone_car:35 %agree%message:48 %agree%money:24 %agree%on_way:-44 %agree%question:-64
%agree%refuse:170 %agree%thanks:-32 %away:284 %away%bring:48 %away%call_off:105 %away%car:44 %away%car_part:-73
%away%do_it:-24 %away%doubt:43 %away%elsewhere:35 %away%family:-22 %away%how_long:-24 %away%leave_me:-67
%away%lift:-44 %away%noise:-24 %away%on_way:-47 %away%pay_day:29 %away%phone:61 %away%question:157 %away%refuse:-117
%away%season:38 %away%shift_it:35 %away%staff:-24 %away%start_again:30 %bad:-28 %bad%bring:56 %bad%busy:53
%bad%refuse:-27 %bring%busy:26 %bring%call_off:56 %bring%do_it:-31 %bring%doubt:69 %bring%elsewhere:-22
%bring%money:70 %bring%on_way:23 %bring%pay_day:59 %bring%phone:37 %bring%question:-80 %bring%refuse:65
%bring%season:55 %bring%shift_it:32 %busy:201 %busy%gone_car:103 %busy%how_long:67 %busy%lift:34 %busy%pay_day:48
%busy%phone:-35 %busy%season:40 %busy%shift_it:-42 %busy%start_again:52 %call_off:30 %call_off%car:-70
%call_off%car_part:-36 %call_off%doubt:37 %call_off%elsewhere:-53 %call_off%family:-22 %call_off%how_long:35
%call_off%lift:-87 %call_off%message:-72 %call_off%money:67 %call_off%odometer:-23 %call_off%phone:-51
%call_off%place:-28 %call_off%question:43 %call_off%refuse:51 %call_off%season:178 %call_off%shift_it:-58
%call_off%thanks:39 %car:-106 %car%car_part:-53 %car%family:25 %car%gone_car:-49 %car%money:-31 %car%odometer:22
%car%pay_day:-43 %car%place:61 %car_part:-162 %car_part%fails:-28 %car_part%family:29 %car_part%leave_me:22
%car_part%money:50 %car_part%noise:-28 %car_part%on_way:-28 %car_part%pay_day:-33 %car_part%phone:-50
%car_part%question:-33 %car_part%refuse:76 %car_part%season:32 %car_part%shake:-36 %car_part%smoke_smell:-22
%car_part%start_again:-30 %do_it:-130 %do_it%doubt:40 %do_it%elsewhere:-41 %do_it%gone_car:-31 %do_it%message:61
%do_it%pay_day:-66 %do_it%question:42 %do_it%refuse:-33 %do_it%season:-35 %do_it%start_again:29 %do_it%wrong_one:-53
%doubt:139 %doubt%elsewhere:-54 %doubt%family:61 %doubt%how_long:-25 %doubt%lift:28 %doubt%message:31
%doubt%money:-37 %doubt%odometer:89 %doubt%on_way:64 %doubt%pay_day:32 %doubt%refuse:78 %doubt%season:120
%doubt%shift_it:-37 %doubt%staff:22 %doubt%wrong_one:-91 %elsewhere:-75 %elsewhere%gone_car:-27
%elsewhere%message:-35 %elsewhere%odometer:57 %elsewhere%phone:-27 %elsewhere%refuse:-30 %elsewhere%season:24
%elsewhere%staff:-39 %elsewhere%wrong_one:-46 %fails:-89 %family%leave_me:25 %family%phone:22 %family%question:30
%family%refuse:-38 %family%start_again:74 %family%wrong_one:54 %gone_car:-126 %gone_car%how_long:60
%gone_car%money:29 %gone_car%pay_day:-37 %gone_car%question:53 %gone_car%refuse:48 %gone_car%season:23
%gone_car%shift_it:-52 %gone_car%start_again:-22 %how_long:30 %how_long%lift:28 %how_long%pay_day:47
%how_long%question:-44 %how_long%refuse:51 %how_long%shift_it:-50 %leak:-42 %leave_me:-36 %leave_me%message:-44
%leave_me%money:46 %leave_me%odometer:72 %leave_me%on_way:22 %leave_me%opening:45 %leave_me%pay_day:-53
%leave_me%place:47 %leave_me%question:38 %lift:-108 %lift%money:-26 %lift%odometer:-22 %lift%pay_day:-105
%lift%season:-129 %lift%start_again:23 %lift%wrong_one:43 %machine:-53 %meaning%pay_day:49 %message:-88
%message%on_way:41 %message%pay_day:-37 %message%question:44 %message%refuse:-51 %message%start_again:-87
%message%thanks:-36 %message%wrong_one:-71 %money%noise:22 %money%odometer:-46 %money%pay_day:31 %money%place:43
%money%season:66 %money%shift_it:-39 %money%start_again:-38 %noise:-102 %noise%question:-53 %odometer%opening:49
%odometer%pay_day:-35 %odometer%phone:-48 %odometer%question:75 %odometer%shift_it:93 %odometer%staff:40 %on_way:-74
%on_way%pay_day:27 %on_way%place:-32 %on_way%question:-49 %on_way%season:39 %on_way%start_again:33 %opening:-50
%opening%question:-60 %pay_day:271 %pay_day%question:192 %pay_day%refuse:87 %pay_day%season:-58 %pay_day%shift_it:46
%pay_day%wrong_one:74 %phone:-171 %phone%question:-24 %phone%refuse:-26 %phone%season:130 %phone%shift_it:-36
%phone%staff:-48 %phone%wrong_one:50 %place:-37 %place%question:-35 %place%refuse:66 %question:-46
%question%season:171 %question%shake:-62 %question%smoke_smell:-27 %question%start_again:-24 %question%who:-59
%question%wrong_one:28 %refuse:-144 %refuse%season:185 %refuse%staff:-55 %refuse%start_again:-67 %refuse%thanks:-66
%refuse%who:-23 %season:329 %season%shift_it:121 %season%start_again:57 %season%thanks:24 %season%wrong_one:102
%shake:-84 %shift_it%wrong_one:-47 %smoke_smell:-88 %staff:-56 %start_again:-86 %thanks:-80 %who:-96 %wrong_one:-37
@?:-226 @after_visit:-156 @car:-50 @confirm:-281 @confirm_stop:-104 @later:411 @nothing:-221 @odometer:54
@offers:-122 @reading:-181 @time:-139 @times:-98 @walk_in:-116 ^_about:-30 ^_after:150 ^_aguanta:-94 ^_ahora:106
^_ahorita:35 ^_al:101 ^_ando:103 ^_any:-39 ^_apenas:34 ^_asi:-38 ^_ask:75 ^_at:102 ^_call:-51 ^_can:-72 ^_cant:104
^_check:28 ^_como:-32 ^_count:-42 ^_cuando:106 ^_cuanto:-59 ^_de:34 ^_dejame:47 ^_deje:176 ^_dejeme:141 ^_despues:54
^_do:-88 ^_dont:68 ^_el:-78 ^_en:114 ^_end:-39 ^_es:-33 ^_eso:-27 ^_estoy:87 ^_feliz:-39 ^_first:-53 ^_for:-27
^_get:-35 ^_gimme:29 ^_give:48 ^_go:-34 ^_got:110 ^_gracias:-42 ^_hablenme:41 ^_hace:-33 ^_had:-27 ^_hang:27 ^_hmm:27
^_hold:65 ^_how:-82 ^_i:-57 ^_ill:114 ^_is:-53 ^_it:-61 ^_just:62 ^_la:-105 ^_le:-46 ^_let:165 ^_llamenme:-29
^_lo:116 ^_luego:58 ^_mas:186 ^_maybe:72 ^_me:-152 ^_mi:23 ^_might:-23 ^_my:-100 ^_need:134 ^_ninguno:25 ^_not:195
^_oh:-24 ^_ok:-56 ^_on:48 ^_once:64 ^_one:-24 ^_opt:-78 ^_otro:78 ^_please:-47 ^_por:-33 ^_puedo:-107 ^_que:-90
^_ring:-25 ^_se:-79 ^_si:-107 ^_sign:-26 ^_sorry:-54 ^_still:-25 ^_sure:-182 ^_tengo:92 ^_text:59 ^_the:-132
^_this:-36 ^_thursday:-22 ^_todo:22 ^_too:56 ^_traded:-31 ^_try:93 ^_va:36 ^_wait:37 ^_were:60 ^_what:-83 ^_when:144
^_whenever:-50 ^_why:-27 ^_will:38 ^_y:-37 ^_yeah:-32 ^_yes:-70 ^_yo:142 ^_you:-105 a__is:-30 a__mil:102 a__of:-44
a__or:37 a__thing:35 a__time:66 a__weeks:70 a_bit:59 a_call:-27 a_couple:25 a_few:72 a_good:74 a_las:22 a_los:57
a_mi:-59 a_month:35 a_que:29 a_week:-23 a_while:40 about:46 about_it:66 acabe:47 add:-31 adelante:43 afford:36
afford_it:39 after:-38 after_$:-89 after__day:35 after__th:-32 after_all:-23 after_the:31 again:23 again_$:-128
again_in:79 again_on:24 aguanta:-95 ahi:39 ahora:191 ahora_$:35 ahora_no:144 ahorita:38 ahorita__puedo:27
ahorita_no:75 aire:-25 aire_$:-23 airport:49 al:31 al__que:22 al_rato:60 al_trabajo:-37 all:-77 all_$:-50 an:-43
and:-91 and_not:-25 anda:-24 andamos:24 ando:170 ando__de:25 ando_bien:81 ando_fuera:50 ano:43 another:34 any:-67
any_time:-22 anything:22 apenas:36 are:33 are__the:57 are_in:57 are_you:-26 as:-24 as_well:-27 asi:-87 asi_$:-40
ask:405 ask__again:60 ask__in:50 ask_me:244 at:177 at__moment:67 at__time:27 at_k:141 at_my:24 at_the:88 at_this:26
august:26 avisar:-23 aviso:119 aviso_$:104 away:-59 away_$:-40 baby:31 back:-44 back_$:-65 back__the:-28 back__you:85
back_from:36 back_in:-23 back_out:-22 back_to:83 baje:23 baje_la:22 be:-72 before_i:23 better:36 better_$:38
between:32 bien:38 bien_$:-34 bit:60 boss:49 boss_$:38 budget:60 buen:42 busco:59 busco_$:57 busy:119 by_$:-29
cada:-24 calendar:29 call:-27 call_$:-23 call_me:-61 came:-35 can:-84 can__check:-22 can__get:-34 can__me:-27
can__tell:35 can__the:22 can__wait:-76 can_i:-26 can_it:-67 cancel_$:-23 cancele:41 cant:117 cant__in:-28 cant__it:32
cant__the:26 cant_come:-26 care:-33 care_of:-32 carro_esta:25 chance:42 chance_$:25 checar:52 check:67 check_$:22
check__me:47 check_engine:-40 check_with:67 checks:36 checks_$:37 checo:84 cobraron:-33 cobre:45 come:-28 comes:59
comes_$:29 como:-54 con:52 con_mi:89 con_ustedes:-22 confirmo:89 confirmo_$:81 contact_me:-22 corto:37 cost:-26
count:-44 count__in:-37 count_me:-44 couple:25 cualquier:-25 cuando:36 cuando__a:26 cuando__del:24 cuando__la:65
cuando__vuelta:-25 cuando_doy:-25 cuando_freno:-35 cuando_llegue:25 cuando_lo:-72 cuando_me:49 cuando_regrese:29
cuando_salga:30 cuando_tenga:52 cuanto:-31 cuanto_me:-47 da:-31 dan:23 day_after:-26 days:110 days_$:97 de:87
de__no:69 de__que:-22 de_dinero:48 de_eso:23 de_la:34 de_las:-55 deja:33 dejame:67 dejaron:-27 deje:180 dejelo:-33
dejeme:141 del:-22 deme:33 denme:22 despues:44 despues_$:85 despues__las:-61 despues_de:-30 despues_del:-56 di:-26
dia:37 dia_$:-33 dias:58 did:-26 digo:198 digo_$:156 dinero:107 dinero_$:109 dios:24 do:-85 do__need:-34 do_i:-44
do_it:69 do_not:-30 do_you:-38 dont:51 dont__it:49 dont__me:-34 dont_have:60 dont_know:64 dont_text:-32
dont_think:-24 dos:-35 down_the:34 doy:-27 doy_vuelta:-25 drive__a:32 drive_for:34 driving_$:22 drop:-36 easter_$:25
el:63 el__despues:-63 el__mes:61 el__pasado:-25 el_aire:-23 el_ano:30 el_aviso:-33 el_carro:29 el_dinero:28
el_jueves:-24 el_lunes:-47 el_momento:37 el_otro:58 el_pedal:-28 el_sabado:-22 el_verano:45 en:187 en__dias:63
en__noche:28 en__que:23 en__si:31 en__y:33 en_enero:-37 en_la:-50 en_marzo:58 en_mayo:26 en_mil:47 en_noviembre:25
en_unos:71 end:-29 end__the:-42 end_of:-30 enero:-48 enero_$:-72 engine:-45 enough:-26 enough_$:-24 entonces:22
entre:-28 entre_semana:-22 entregan:-35 entregan_$:-35 es:-50 esa:-22 escribo_$:33 escuela:25 escuela_$:28 eso:-32
espacio:-34 espacio_$:-34 esperar:-59 espero:-39 esta:23 esta_semana:36 estan:-58 estan_$:-23 este_mes:33 estoy:65
estoy_bien:-35 estoy_de:53 estoy_en:28 estoy_manejando:-73 ever:-67 ever_$:-54 ex:-58 faltan:25 family:37 favor:-38
febrero:22 feel:27 feel_like:33 feliz:-48 feria:87 few:71 fin:-38 fin_de:-31 finals:36 first:75 first_$:112 fixed:-30
for:52 for_a:38 for_it:136 for_me:-105 for_now:51 for_sure:-25 found:-26 freno:-37 freno_$:-22 friday:-45 frio:36
frio_$:36 fuera:22 fuera_$:25 get:72 get__on:52 get__to:104 get_a:-56 get_back:120 get_it:-27 get_me:-32 get_my:36
get_paid:79 get_the:-40 gets:39 gimme:29 gimme_a:30 give:76 give__a:57 give_me:61 go:-80 go_away:-33 going:-25
going__have:-22 going_on:45 going_to:-44 good_$:-24 got:87 got__wait:26 got_a:-25 got_it:-33 got_to:157 gracias:-44
gracias__el:-30 gracias_por:-57 great:-25 guys:-24 hablamos:33 hablamos_$:32 hablenme:40 hablo:98 hablo_$:79 hace:-77
hace_un:-37 had_to:-28 hang:25 happy:-51 has:-57 has_it:-27 hasta__hora:-36 hasta__me:35 hasta_las:-23 hasta_que:84
have:53 have_time:96 hit:79 hit__up:59 hit_k:26 hit_me:61 hits:27 hmm:27 hold:79 hold_off:53 hold_that:35 hora:-60
horario:41 horario_$:22 horas_$:-31 hospital:34 hospital_$:35 how:-61 how__is:23 how_much:-41 hubby:75 husband:26
i:-36 i__a:-42 i__it:-24 i__like:32 i__my:28 i__out:-40 i__paid:79 i__the:-25 i__to:22 i__you:38 i_can:29 i_cant:-45
i_feel:28 i_get:66 i_had:-22 i_know:23 i_need:73 i_think:-53 i_want:-31 i_will:32 ill:58 ill__back:25 ill__out:26
ill__you:113 ill_be:-25 ill_call:90 ill_do:65 ill_get:26 ill_let:39 ill_pass:-98 ill_take:-72 im:112 im__of:62
im__the:31 im_back:27 im_down:-49 im_free:30 im_out:69 in:126 in_$:-123 in__bit:56 in__fall:29 in__middle:69
in__spring:29 in__weeks:-31 in_a:54 in_another:50 in_june:104 in_the:47 in_two:-47 insurance:42 interested:-22 is:83
is__at:43 is__for:22 is__the:-32 is_on:-48 is_over:33 is_this:-27 is_tight:94 it:-123 it_$:136 it__after:-26 it__i:64
it__last:-32 it__now:40 it__to:-24 it_at:31 it_back:-40 it_be:-30 it_for:42 it_in:-71 it_myself:-24 it_now:-69
it_to:-35 it_wait:-74 it_when:55 jale:-50 jale_$:-52 job:31 job_so:35 jueves:-40 june:113 june_$:81 junio:22 junto:41
just:56 just_had:54 k:115 k_$:123 kinda:61 know:69 know_$:42 know__is:54 know_it:57 la:71 la__de:23 la__en:-54
la__quincena:27 la__semana:-30 la__vez:-72 la_escuela:24 la_noche:33 la_proxima:-50 la_tarde:-29 la_ultima:-38
labor:33 labor_day:35 las_$:-38 las_mil:67 last:-131 last_month:-75 later:24 later_$:83 later_one:-40 le:268
le__a:-22 le__la:24 le_aviso:64 le_digo:83 le_faltan:23 le_hablo:73 les:311 les_aviso:62 les_digo:49 let:180
let__look:54 let__see:50 let_me:153 let_you:66 lets:51 lets__it:-30 lets_out:51 light:-38 like_$:25 like_it:25
list:-22 llamenme:-39 llegue:70 llegue__las:26 llegue_a:39 llevo:58 llevo_$:47 lo__a:43 lo__cuando:23 lo__de:-34
lo__en:-42 lo__hace:-22 lo__pronto:-34 lo_de:28 lo_entregan:-35 lo_llevo:58 lo_mas:-36 lo_vendi:-31 lo_voy:64
look:121 look_$:26 look__my:27 look_at:26 looks:22 looks_like:26 los:63 los_$:36 los_mil:62 lost:26 lost_my:46
luego:87 luego__digo:28 luego_le:23 luego_les:47 lugar:-44 lugar_$:-40 lunes:-59 lunes_despues:-26 make:-50
make_it:-39 manana:-30 manejando:-96 marca:-48 march:45 martes:-30 marzo:97 marzo_$:35 mas:57 mas_$:-91 mas__el:32
mas__posible:-22 mas_adelante:118 mas_para:45 mas_pronto:-41 mas_tarde:26 maybe:100 maybe_in:45 mayo:32 mayo_$:24
me:152 me_$:-172 me__about:28 me__al:-62 me__at:28 me__call:-22 me__el:58 me__im:35 me__in:42 me__june:67 me__las:24
me__my:48 me__on:35 me__this:-23 me__to:-31 me__week:86 me__what:38 me__when:-35 me__you:-29 me_after:29 me_again:67
me_back:-49 me_cobraron:-33 me_dan:25 me_dejaron:-31 me_in:106 me_lo:-45 me_look:54 me_marca:-59 me_next:88
me_now:-35 me_off:-40 me_on:-22 me_out:-30 me_paguen:45 me_see:50 me_some:27 me_then:93 me_tomorrow:39 me_up:47
me_van:-28 me_when:28 mejor:30 mejor_$:23 mensajes:-26 mes:-106 mes_$:-62 mes_pasado:-22 meses:51 meses_$:44 mi__y:42
middle:65 middle_of:67 miercoles:-26 mil:202 mil_$:38 mil_millas:57 miles:26 miles_$:38 millas_$:-27 moment:67
momento:176 momento_no:72 monday:-37 mondays:-30 money_$:-45 money__tight:91 money_is:98 month_$:-22 month_is:-30
month_or:43 months:27 more:-37 moving:68 much_$:-31 mucho:66 muy:-41 my:70 my__back:-42 my__is:40 my__refund:48
my__says:29 my__so:34 my_boss:59 my_car:-47 my_ex:-25 my_husband:22 my_job:45 my_refund:-28 my_schedule:81 my_tax:62
my_wife:37 myself:-27 myself_$:-25 nada_$:-33 near:75 near__car:63 near_the:63 need:114 need__be:-24 need_to:137
needed:-26 new:61 new_year:25 next:42 next_month:34 ni:-37 ninguno:36 no:44 no_$:-61 no__ahora:60 no__el:24
no__tiempo:53 no__yet:97 no_es:38 no_gracias:68 no_me:-62 no_need:-31 no_not:56 no_por:104 no_puedo:115 no_se:63
no_tengo:80 no_traigo:76 noche:36 not:176 not_$:-34 not__me:-64 not__now:76 not__this:63 not__to:-36 not__with:-23
not__yet:86 not_a:43 not_for:-40 not_going:-48 not_happy:-24 not_my:-30 not_now:105 not_right:127 not_sure:146
not_til:24 not_today:99 not_worth:-38 not_yet:159 noviembre:35 now:211 now_$:92 now__me:22 nudge:32 nuevo:31
number:-39 numero:-23 nunca:-37 october:22 of:-81 of__month:-38 of_the:-51 of_town:69 off:-32 off_$:-29 off__now:24
off_for:24 office:-36 oh:-25 ok:-59 on:85 on_$:-22 on__now:32 on__refund:-62 on_it:47 on_my:51 on_that:-25 once:101
once_the:34 one:-75 one_$:-40 only_at:24 open:-29 opt:-86 opt_me:-24 opt_out:-44 or_so:52 otono:37 otra:-38
otra_quincena:24 otra_semana:25 otra_vez:-75 otro_$:-37 otro_dia:77 out:-140 out_$:-99 out__town:69 out_of:23
paguen:45 paid:51 paid_$:26 para:105 para__lo:-28 para_cuando:-44 para_el:94 para_la:30 para_nada:-26 para_que:-45
parked:55 pasado:-33 pasando:27 pase:63 pass:-110 pass_$:-83 payday:46 pedal:-32 pero:29 pero__que:22 phone:-35
please_$:35 please__me:-31 por:55 por__no:31 por_ahora:137 por_favor:-30 por_que:-50 por_una:33 posible:-23
posible_$:-23 preguntenme:29 prices:-51 primavera:30 primero:49 pronto:-45 proxima:-50 proxima_semana:-52 puedan:-24
puedo_$:60 pues:-28 que__el:62 que__la:47 que_cobre:22 que_hora:-34 que_le:-29 que_no:-56 que_pase:60 que_se:27
que_tan:-25 quieren:-23 quincena:45 quincena_$:29 quiza:31 rato_$:-28 rato_que:22 reach:39 ready_$:22 recuerdeme:26
reembolso:-49 refund:-24 regrese:27 remind:44 remind__in:33 remind_me:45 replaced:-26 respondo:-34 right:150
right_$:-25 right_now:166 ring:-28 road:29 road_$:30 robaron:-23 sabado:-33 sale:-26 salga:40 save:58 saving:130
say:-43 say_no:-42 says:53 says_$:44 schedule:31 schedule_$:-40 school:63 school__out:55 school_lets:54 se:-26
se__cuando:-28 se__la:29 se_lo:-23 season:47 second:24 second_$:33 see:104 see__my:103 semana:-53 semana_$:-38
semanas:55 semanas_$:63 sera:94 shes:24 sick:-25 sign:-34 sign_me:-30 skip:-39 skip_it:-36 slow:37 slow_down:47
some:28 some_time:25 somebody:-28 sometime:-57 son:-32 sorry:-63 sorry_i:-41 soy:-25 spring_$:-39 still:-56
still__on:-62 still_waiting:-62 stop_$:-29 stop_by:37 su:-22 summer:55 sunday:34 sunday_$:30 sure:-64 sure__me:-47
surgery:48 swamped:33 take:-110 take_my:-64 tal:29 tal_vez:30 talk:39 talk__my:60 talk_to:38 taller:-28 tarde:-28
tarde_$:-40 tax:75 tax_$:-35 tax_refund:55 te:89 te__luego:-48 te_digo:60 te_escribo:-37 tell:61 tell_you:72 tenga:52
tengan:-66 tengo:105 tengo_tiempo:52 termine:60 text:46 text_$:29 text_me:35 texts:-69 texts_again:-52 th_$:46
thanks:-24 thanksgiving:-26 thanksgiving_$:-26 that:-74 that_$:-46 the:30 the__again:-43 the__are:52 the__ask:32
the__ill:54 the__is:39 the__lol:22 the__of:81 the__one:-27 the__time:-39 the_airport:49 the_baby:28 the_car:67
the_fall:29 the_holidays:27 the_hospital:24 the_later:-55 the_middle:68 the_moment:67 the_month:-40 the_road:43
the_schedule:-34 the_spring:26 the_st:23 the_texts:-45 the_week:-28 them:-26 then:172 then_$:125 there:-37 these:37
these_days:54 they:-48 thing:-33 thing_$:-47 things:58 think__it:99 think_about:71 this:32 this__i:25 this_is:-36
this_month:52 this_week:91 those:-36 though:27 though_$:32 thursday:-45 thursday_$:-29 tiempo:42 tiene:-25
tiene_millas:-42 tienen:-51 tienen_$:-38 tight:103 tight_$:61 til:68 til_the:48 till:93 time:117 time_$:55
time__week:56 to:118 to__all:-31 to__for:67 to__it:-26 to__me:-32 to__on:24 to__the:59 to__to:25 to__up:51
to__what:49 to__wife:55 to_ask:66 to_be:-36 to_check:34 to_get:-24 to_have:-25 to_me:24 to_my:29 to_say:-23 to_see:63
to_somebody:-26 to_talk:47 to_the:-82 to_wait:81 to_you:51 todavia_no:69 today:83 today_$:75 tomorrow:39
tomorrow_$:61 tomorrow_after:-30 tonight:81 tonight_$:69 too_$:-23 too__for:-53 too_much:28 took:-52 took__of:-24
took_care:-24 totaled:-22 town:46 town_$:46 traded:-39 traded__in:-31 traded_it:-31 traigo:69 trip:-28 try:169
try__in:35 try_me:159 twice:-26 two:-72 two_weeks:-57 ultima:-43 ultima_vez:-37 un:-110 un__mas:-72 un_mes:-86
una:-32 unos:115 unos_meses:26 until:45 until_the:43 up:162 up_for:77 up_in:28 ustedes:-48 va:23 va__mil:28 va_en:56
vacaciones:42 vacation:60 vacation_$:58 van:-31 vemos:39 vendi:-31 vendimos:-62 ver:54 ver__mi:68 ver_con:68
verano:47 verano_$:33 vez:-116 vez_$:-55 vez_me:-30 voy_a:67 vuelta:-30 vuelta_$:-29 wait__my:34 wait_til:-26
waiting__my:22 was:-54 we:44 we_are:58 weather:51 week:60 week_$:57 weeks_$:24 well:-28 went:-37 were:58 what__i:27
what_my:90 when:219 when__i:-35 when__it:-24 when__slow:48 when_i:120 when_im:65 when_the:114 when_would:-43
when_you:-35 whenever:-87 where:-26 who:-52 who_you:-26 why:-51 why_not:-29 wife_$:33 wife__it:-33 will:88
will__you:45 will_it:-27 with_a:30 with_me:48 with_tax:-41 with_the:-29 work:-56 work_$:-74 worth:-40 would:-43
would__get:-29 would_i:-26 y:93 y__digo:23 y_no:-37 y_te:43 ya__me:25 ya__pase:54 ya_les:109 ya_lo:-46 ya_no:-35
ya_que:113 ya_tengo:-25 yeah:-41 yes:-82 yet:316 yet_$:199 yet__me:61 yo:191 yo__aviso:64 yo_le:101 yo_les:100
you:-109 you_$:63 you__a:-27 you__i:25 you__im:43 you__me:-22 you__my:-40 you_all:-30 you_are:-24 you_can:-34
you_check:-22 you_get:-27 you_guys:-24 you_know:61 you_tomorrow:37 you_when:84 your:-74
"""
