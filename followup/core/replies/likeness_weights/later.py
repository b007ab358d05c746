"""What speaks for and against `later`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "later"
BIAS = -111
WEIGHTS = """\
#abad:-19 #ablo:95 #abor:29 #abou:39 #acab:68 #acac:31 #acat:51 #aced:-25 #acia:-35 #aded:-33 #adel:70 #adua:23
#affo:27 #afra:22 #afte:-41 #agai:22 #agua:-85 #ague:30 #ahor:193 #aigo:55 #aire:-23 #airp:44 #ajes:-27 #akes:-28
#aled:-23 #ales:22 #alin:35 #alle:-31 #alon:-18 #alri:-53 #ambi:-36 #amen:-34 #amil:28 #amos:67 #ampe:20 #anan:-26
#anas:41 #ance:52 #ando:99 #anej:-75 #anks:-44 #anme:22 #anne:18 #anos:-23 #anot:23 #anta:-61 #ante:73 #anto:-36
#apen:29 #appe:-27 #appy:-46 #aqui:-20 #arca:-49 #arch:27 #arco:26 #arde:-32 #aren:30 #arge:-30 #ario:34 #arke:46
#arly:-21 #aron:-89 #arte:-21 #arzo:24 #asad:-31 #asan:27 #ason:35 #aste:18 #athe:52 #atio:57 #atur:-19 #augu:19
#auto:-29 #aver:19 #avia:41 #avin:104 #avis:116 #avor:-36 #away:-40 #aybe:72 #ayda:45 #ayin:24 #back:-33 #bado:-20
#baje:26 #bajo:-21 #ball:22 #band:42 #bett:31 #betw:33 #bien:29 #blam:19 #blen:31 #body:-23 #bols:-40 #book:31
#boss:43 #bout:38 #brak:-20 #brar:-35 #brer:20 #bscr:-19 #budg:54 #buen:27 #busc:22 #busq:23 #busy:99 #cabe:57
#caci:23 #cada:-19 #call:-31 #camb:-33 #came:-23 #canc:24 #cans:-18 #cant:94 #care:-25 #caro:-18 #cati:41 #cela:20
#cena:31 #chan:-37 #char:-33 #chec:192 #choo:57 #cias:-34 #cibi:-19 #ciem:-23 #cien:-25 #cion:27 #ciud:19 #cked:-24
#cker:-28 #comm:30 #como:-48 #conf:71 #cont:-20 #cool:-18 #cort:48 #cost:-22 #coun:-42 #ctob:22 #cual:-20 #cuar:35
#cuel:22 #cuen:-23 #cuer:55 #cupa:69 #cupo:-19 #dame:35 #davi:20 #days:75 #ddle:51 #deal:31 #deja:48 #deje:212
#dela:71 #deme:47 #depe:23 #desp:25 #dget:54 #dian:21 #dias:61 #dici:-24 #dier:-25 #digo:162 #dill:18 #dimo:-58
#dine:89 #ding:18 #dire:96 #dont:43 #drop:-31 #dule:21 #each:27 #eali:29 #earl:-25 #earn:23 #easo:35 #eath:58
#ebod:-18 #ebre:19 #ecar:37 #eces:-37 #ecib:-22 #ecio:-33 #ecks:32 #ecue:51 #edal:-25 #eded:-22 #edes:-36 #edul:21
#eede:-22 #egan:-35 #egre:37 #egue:59 #egun:56 #ejam:60 #ejan:-82 #ejar:-34 #ejel:-30 #ejem:103 #ejen:-28 #ejor:26
#elan:80 #eliz:-43 #elva:20 #elve:19 #elvo:23 #eman:25 #embe:37 #embr:29 #emos:19 #empo:53 #enas:33 #endi:-88
#endo:-18 #enen:-51 #ener:-74 #enev:-60 #enga:-49 #engi:-35 #engo:93 #enme:61 #enou:-22 #ensa:145 #enta:-20 #ente:22
#ento:139 #entr:-27 #epen:22 #epla:-26 #eran:20 #erar:-38 #erch:-22 #erda:22 #erde:24 #eren:-24 #eres:-38 #eria:61
#ermi:52 #eron:-60 #erse:48 #ervi:-19 #esda:-20 #eses:47 #espa:-28 #espe:-81 #espo:-23 #espu:18 #esta:-35 #esto:32
#etim:-45 #ette:30 #etwe:33 #ever:-145 #eves:-26 #evis:52 #expe:-19 #exts:-55 #fami:28 #favo:-36 #feli:-44 #feri:75
#ffic:-36 #ffor:24 #fice:-35 #fies:18 #fina:42 #firm:81 #firs:53 #fixe:-24 #ford:27 #foun:-23 #fren:-46 #frid:-43
#frio:31 #fter:-41 #fund:-20 #gain:22 #gets:43 #gimm:24 #gine:-35 #give:68 #givi:-28 #grac:-34 #grea:-26 #gres:37
#gual:-22 #guan:-78 #guen:31 #guno:34 #gunt:66 #guys:-22 #habl:103 #hace:-70 #hank:-48 #happ:-62 #harg:-30 #have:31
#head:-18 #heca:41 #heck:66 #hedu:21 #hene:-60 #here:-43 #hese:39 #hici:-20 #hits:25 #hold:88 #hone:-27 #hool:57
#hora:134 #hori:46 #hose:-35 #hosp:31 #houg:40 #hous:20 #hubb:59 #hurs:-44 #husb:23 #ibir:-29 #ible:-25 #ices:-43
#icie:-37 #iday:-33 #iddl:53 #iemb:19 #iemp:28 #iene:-76 #iere:-24 #iero:-70 #ight:154 #igua:-22 #iles:47 #imav:19
#imer:18 #imme:24 #imos:-64 #inal:51 #ince:27 #inda:42 #iner:87 #ings:40 #ingu:29 #insu:42 #inte:-43 #ione:36
#irmo:85 #irpo:44 #irst:53 #isar:-19 #isen:24 #isit:41 #ital:26 #iuda:19 #ivin:-32 #ixed:-25 #jale:-49 #jame:56
#jand:-77 #jaro:-20 #jelo:-30 #jeme:103 #juev:-26 #jump:-19 #june:102 #junt:123 #just:48 #kind:50 #know:44 #ksgi:-21
#labo:29 #lace:-34 #lama:-22 #lame:-34 #lamo:22 #lann:20 #lant:60 #last:-99 #leav:-18 #legu:62 #lend:26 #lenm:32
#lent:-21 #lets:43 #leve:-21 #levo:35 #lice:19 #ligh:-46 #list:-20 #llam:-49 #llas:-20 #lleg:62 #llev:21 #long:-29
#look:82 #lost:22 #lrig:-53 #ltan:24 #ltim:-39 #lueg:67 #luga:-40 #lunc:-19 #lune:-49 #make:-31 #mana:-27 #mane:-76
#mart:-20 #marz:24 #mati:-26 #mave:19 #mayb:72 #mayo:30 #mbia:-25 #mbol:-39 #mbre:25 #mebo:-18 #medi:20 #mejo:26
#menm:-29 #mens:-22 #ment:192 #mero:37 #mese:47 #meti:-48 #midd:53 #mile:29 #mily:29 #mine:43 #mmer:27 #mome:208
#mond:-48 #mont:40 #more:-36 #morr:38 #movi:49 #mped:20 #mpor:19 #mpre:-26 #much:32 #nals:29 #nana:-24 #ncel:20
#ncen:30 #nces:-43 #nche:-27 #ndam:25 #ndar:19 #nday:-18 #ndim:-57 #near:68 #nece:-18 #need:56 #neja:-71 #neve:-82
#next:26 #nfir:83 #ngan:-89 #nged:-18 #ngin:-37 #ngun:29 #nigh:54 #nksg:-21 #noch:31 #noth:24 #noug:-22 #novi:41
#nsaj:-21 #nsar:174 #nsur:42 #ntan:38 #ntar:59 #nten:53 #nter:-52 #ntes:20 #nths:27 #ntil:48 #ntit:20 #ntra:31
#ntre:-53 #nuev:19 #numb:-32 #nunc:-31 #nyth:18 #ober:22 #oble:-23 #obra:-34 #oche:29 #ocke:-20 #octo:34 #ocup:53
#odav:20 #oday:67 #offi:-35 #oint:-25 #okin:-19 #omat:-24 #omeb:-18 #omen:175 #omer:-18 #omes:47 #omet:-65 #omor:38
#once:94 #onda:-51 #ondo:-43 #ones:20 #onfi:78 #onig:80 #onth:45 #onto:-43 #ooki:-19 #ooks:22 #open:-42 #oper:45
#ople:-18 #orad:20 #orar:38 #orit:42 #orro:41 #orry:-55 #orta:19 #orth:-31 #orto:28 #osib:-22 #ospi:31 #otal:-25
#othe:22 #otra:-28 #ould:-38 #ound:-23 #ount:-52 #oupl:23 #ouse:19 #over:31 #ovie:49 #ovin:53 #oxim:-45 #paci:-25
#paga:19 #pagu:30 #paid:46 #para:71 #park:39 #pase:55 #pass:-91 #payd:45 #payi:24 #peda:-25 #pena:18 #pend:23
#pens:148 #phon:-35 #pido:-20 #pita:26 #plac:-29 #plan:29 #poin:-25 #pond:-27 #port:35 #prec:-27 #preg:66 #pren:-25
#pres:-20 #pric:-90 #prim:31 #prin:-34 #pron:-43 #prox:-42 #pued:-43 #pues:-21 #punt:-19 #quea:-18 #qued:-30
#quie:-59 #quin:24 #quiz:31 #rada:23 #rade:-68 #radu:24 #raig:57 #rake:-19 #ramo:23 #ranc:40 #rand:-20 #rano:22
#rari:38 #raro:-27 #rcha:-29 #rday:-20 #rdem:34 #reac:27 #read:29 #rece:-18 #reci:-62 #recu:52 #reem:-39 #rega:-31
#regr:37 #regu:62 #rend:-26 #reno:-37 #rent:23 #repl:-38 #rero:19 #reso:20 #resp:-33 #ress:-21 #revi:51 #rged:-27
#rger:41 #riba:22 #ribo:-20 #rice:-82 #rida:-37 #righ:77 #rima:19 #rime:18 #ring:-66 #rita:35 #rked:46 #rmin:53
#rned:-18 #rnin:-18 #road:39 #ront:-59 #roxi:-45 #rpor:43 #rque:-28 #rren:-23 #rrow:38 #rsda:-37 #rtes:-21 #rvic:-18
#saba:-19 #saje:-27 #sand:35 #save:49 #savi:114 #says:51 #sban:23 #sche:21 #scho:57 #scue:19 #sday:-57 #seas:93
#self:-23 #sema:19 #seme:28 #senm:23 #sept:26 #sera:84 #serv:-19 #sgiv:-21 #shes:22 #sibl:-24 #sick:-18 #sign:-32
#sigo:18 #skip:-32 #slow:28 #some:-51 #sorr:-53 #spac:-33 #sper:-83 #spit:24 #spon:-38 #spri:-24 #spue:18 #ssed:-28
#stan:-59 #sted:-66 #stil:-44 #stoy:57 #subs:-19 #suel:20 #summ:27 #sund:30 #sura:42 #sure:-52 #surg:38 #tado:31
#take:-104 #tale:-20 #talk:35 #tall:-28 #tand:28 #tard:-35 #tede:-36 #tell:48 #tena:27 #teng:67 #tenm:18 #tere:-35
#term:53 #text:-42 #than:-52 #that:-56 #then:146 #thes:39 #they:-38 #thin:41 #this:33 #thos:-35 #thou:49 #thur:-44
#tiem:33 #tien:-54 #tigh:78 #till:54 #tima:-37 #time:43 #tion:50 #tira:-20 #tito:32 #tobe:22 #toda:85 #toma:-22
#tomo:38 #tonc:18 #toni:80 #took:-46 #tota:-25 #town:40 #trad:-54 #trai:62 #treg:-38 #trip:-28 #tter:35 #tues:-26
#twee:33 #twic:-23 #uand:23 #uant:-108 #uare:40 #uary:-23 #ubby:59 #ubre:20 #ubsc:-19 #ucho:61 #udad:19 #udge:79
#uebl:24 #ueda:-35 #uede:-38 #uego:66 #uela:21 #uelt:-18 #uelv:63 #uent:-23 #uerd:55 #uest:-26 #ueve:-28 #ugar:-40
#ugus:19 #uier:-56 #uinc:30 #uiza:31 #ulti:-39 #umbe:-32 #umme:27 #unas:25 #unca:-31 #unch:-20 #unda:22 #unes:-49
#unos:101 #unta:86 #unte:43 #unti:61 #unto:33 #uple:23 #uran:39 #urge:30 #ursd:-37 #usba:23 #usqu:23 #uste:-67
#utom:-24 #vaca:81 #vemo:26 #vend:-74 #vera:47 #verc:-22 #vers:44 #viem:41 #ving:128 #vise:45 #visi:40 #viso:93
#vuel:26 #wait:19 #week:75 #ween:33 #went:-30 #were:45 #when:121 #wice:-23 #wife:25 #will:67 #work:-62 #wort:-32
#woul:-38 #xima:-41 #yday:45 #yeah:-29 #your:-61 #ythi:20 %again_later:293 %again_later%away:123 %again_later%busy:98
%again_later%call_off:58 %again_later%car:61 %again_later%car_part:-32 %again_later%do_it:82 %again_later%doubt:32
%again_later%elsewhere:20 %again_later%fails:32 %again_later%family:88 %again_later%leave_me:40 %again_later%lift:-79
%again_later%money:52 %again_later%noise:-34 %again_later%on_way:-37 %again_later%opening:-35 %again_later%pay_day:95
%again_later%phone:-48 %again_later%place:-33 %again_later%refuse:138 %again_later%season:26 %again_later%shake:-38
%again_later%shift_it:32 %again_later%thanks:-72 %agree:-49 %agree%away:-26 %agree%bring:-117 %agree%busy:-21
%agree%car_part:-34 %agree%do_it:22 %agree%doubt:-24 %agree%family:30 %agree%gone_car:36 %agree%message:44
%agree%money:24 %agree%odometer:19 %agree%on_way:-37 %agree%question:-64 %agree%refuse:143 %agree%staff:21
%agree%thanks:-42 %away:240 %away%bring:50 %away%call_off:84 %away%car:38 %away%car_part:-61 %away%do_it:-23
%away%elsewhere:46 %away%gone_car:-19 %away%how_long:-26 %away%leave_me:-38 %away%lift:-36 %away%noise:-18
%away%on_way:-28 %away%pay_day:29 %away%phone:67 %away%question:92 %away%refuse:-91 %away%season:27 %away%shift_it:33
%away%start_again:27 %bad:-36 %bad%bring:52 %bad%busy:54 %bad%refuse:-26 %bring%busy:25 %bring%call_off:44
%bring%do_it:-27 %bring%doubt:56 %bring%elsewhere:-27 %bring%how_long:-24 %bring%money:56 %bring%on_way:19
%bring%pay_day:36 %bring%phone:32 %bring%question:-57 %bring%refuse:59 %bring%season:33 %bring%shift_it:22
%bring%smoke_smell:21 %busy:175 %busy%car_part:18 %busy%gone_car:93 %busy%how_long:52 %busy%lift:28 %busy%pay_day:48
%busy%phone:-35 %busy%refuse:-22 %busy%season:33 %busy%shift_it:-34 %busy%start_again:44 %call_off:18
%call_off%car:-49 %call_off%car_part:-36 %call_off%do_it:-34 %call_off%doubt:19 %call_off%elsewhere:-39
%call_off%family:-25 %call_off%lift:-61 %call_off%message:-69 %call_off%money:63 %call_off%odometer:-27
%call_off%phone:-38 %call_off%place:-22 %call_off%question:23 %call_off%refuse:33 %call_off%season:119
%call_off%shift_it:-72 %call_off%thanks:24 %car:-104 %car%car_part:-47 %car%do_it:-18 %car%gone_car:-37
%car%money:-20 %car%pay_day:-36 %car%place:55 %car%start_again:-29 %car_part:-162 %car_part%do_it:-33
%car_part%elsewhere:-21 %car_part%fails:-34 %car_part%family:26 %car_part%gone_car:-19 %car_part%money:28
%car_part%noise:-22 %car_part%on_way:-30 %car_part%pay_day:-47 %car_part%phone:-43 %car_part%question:-34
%car_part%refuse:84 %car_part%shake:-28 %car_part%shift_it:-21 %car_part%start_again:-29 %do_it:-120 %do_it%doubt:34
%do_it%elsewhere:-28 %do_it%family:-18 %do_it%gone_car:-29 %do_it%message:45 %do_it%on_way:-18 %do_it%pay_day:-31
%do_it%question:22 %do_it%refuse:-34 %do_it%season:-33 %do_it%shift_it:-30 %do_it%wrong_one:-49 %doubt:116
%doubt%elsewhere:-36 %doubt%family:48 %doubt%message:28 %doubt%odometer:76 %doubt%on_way:40 %doubt%pay_day:31
%doubt%refuse:61 %doubt%season:91 %doubt%staff:18 %doubt%wrong_one:-81 %elsewhere:-77 %elsewhere%gone_car:-26
%elsewhere%message:-25 %elsewhere%money:-27 %elsewhere%odometer:50 %elsewhere%phone:-20 %elsewhere%refuse:-27
%elsewhere%season:36 %elsewhere%shift_it:-19 %elsewhere%staff:-28 %elsewhere%wrong_one:-46 %fails:-92
%fails%question:-19 %family:19 %family%phone:20 %family%question:25 %family%refuse:-33 %family%start_again:46
%family%wrong_one:38 %gone_car:-104 %gone_car%how_long:51 %gone_car%money:31 %gone_car%pay_day:-23
%gone_car%question:64 %gone_car%refuse:40 %gone_car%season:36 %gone_car%shift_it:-32 %gone_car%start_again:-19
%gone_car%wrong_one:-24 %how_long%lift:32 %how_long%odometer:22 %how_long%opening:-21 %how_long%pay_day:31
%how_long%place:-18 %how_long%question:-46 %how_long%refuse:40 %how_long%shift_it:-39 %how_long%wrong_one:23
%leak:-26 %leave_me:-43 %leave_me%message:-49 %leave_me%money:24 %leave_me%odometer:58 %leave_me%opening:33
%leave_me%pay_day:-38 %leave_me%place:29 %leave_me%question:20 %leave_me%refuse:29 %leave_me%season:-19
%leave_me%shift_it:20 %leave_me%start_again:-22 %lift:-101 %lift%money:-28 %lift%odometer:-19 %lift%pay_day:-89
%lift%season:-116 %lift%start_again:34 %lift%wrong_one:49 %machine:-41 %meaning%pay_day:35 %message:-80
%message%on_way:43 %message%pay_day:-32 %message%question:23 %message%refuse:-38 %message%start_again:-61
%message%thanks:-23 %message%wrong_one:-67 %money%odometer:-34 %money%pay_day:37 %money%place:29 %money%season:40
%money%shift_it:-31 %money%start_again:-29 %money%wrong_one:20 %noise:-90 %noise%question:-40 %odometer%opening:43
%odometer%pay_day:-34 %odometer%phone:-41 %odometer%question:59 %odometer%shift_it:78 %odometer%staff:35 %on_way:-73
%on_way%place:-21 %on_way%question:-35 %on_way%shift_it:-20 %on_way%start_again:27 %opening:-40 %opening%question:-56
%pay_day:234 %pay_day%question:136 %pay_day%refuse:63 %pay_day%season:-46 %pay_day%shift_it:22
%pay_day%start_again:19 %pay_day%wrong_one:38 %phone:-148 %phone%season:94 %phone%shift_it:-34 %phone%staff:-44
%phone%wrong_one:34 %place%question:-44 %place%refuse:60 %question:-43 %question%refuse:36 %question%season:127
%question%shake:-46 %question%who:-54 %question%wrong_one:19 %refuse:-107 %refuse%season:134 %refuse%shift_it:-25
%refuse%staff:-37 %refuse%start_again:-64 %refuse%thanks:-55 %refuse%who:-19 %refuse%wrong_one:-31 %season:272
%season%shift_it:103 %season%start_again:49 %season%wrong_one:77 %shake:-67 %shift_it:-19 %shift_it%start_again:-20
%shift_it%wrong_one:-39 %smoke_smell:-55 %staff:-70 %staff%wrong_one:-24 %start_again:-83 %start_again%wrong_one:-23
%thanks:-70 %who:-91 %wrong_one:-47 @?:-237 @after_visit:-153 @car:-39 @confirm:-280 @confirm_stop:-68 @day:-21
@later:314 @nothing:-222 @odometer:41 @offers:-86 @reading:-171 @time:-78 @times:-108 @walk_in:-120 ^_a:-25
^_about:-25 ^_after:110 ^_ahora:95 ^_ahorita:30 ^_al:88 ^_ando:94 ^_any:-30 ^_apenas:26 ^_asi:-35 ^_ask:73 ^_at:55
^_call:-34 ^_can:-55 ^_cant:75 ^_check:26 ^_como:-23 ^_count:-42 ^_cuando:80 ^_cuanto:-44 ^_de:30 ^_dejame:42
^_deje:167 ^_dejeme:103 ^_despues:49 ^_do:-70 ^_dont:60 ^_el:-50 ^_en:86 ^_end:-32 ^_es:-26 ^_eso:-26 ^_estoy:85
^_feliz:-33 ^_first:-44 ^_for:-22 ^_get:-27 ^_give:34 ^_go:-32 ^_got:93 ^_gracias:-24 ^_hablenme:33 ^_hace:-22
^_had:-20 ^_hmm:23 ^_hold:56 ^_how:-70 ^_i:-44 ^_ill:100 ^_im:-24 ^_in:-24 ^_is:-47 ^_it:-52 ^_just:60 ^_la:-107
^_le:-35 ^_let:124 ^_llamenme:-25 ^_lo:107 ^_lost:-19 ^_luego:47 ^_mas:140 ^_maybe:55 ^_me:-117 ^_mejor:-20 ^_my:-75
^_need:109 ^_no:-21 ^_not:129 ^_oh:-25 ^_ok:-44 ^_on:43 ^_once:30 ^_one:-19 ^_opt:-47 ^_otro:73 ^_please:-38
^_puedo:-86 ^_put:20 ^_que:-63 ^_se:-65 ^_si:-88 ^_sign:-22 ^_sorry:-46 ^_still:-24 ^_sure:-154 ^_tengo:81 ^_text:49
^_thanks:-19 ^_the:-109 ^_this:-27 ^_thursday:-18 ^_too:34 ^_traded:-26 ^_wait:26 ^_were:55 ^_what:-72 ^_when:111
^_whenever:-32 ^_why:-22 ^_will:39 ^_y:-35 ^_ya:38 ^_yeah:-23 ^_yes:-66 ^_yo:118 ^_you:-88 a__is:-29 a__mil:70
a__of:-39 a__or:26 a__thing:27 a__time:60 a__weeks:60 a_bit:41 a_call:-22 a_couple:23 a_few:62 a_good:65 a_los:51
a_mi:-35 a_month:26 a_week:-28 about:39 about_it:48 acabe:52 add:-25 adelante:51 adelante_$:21 afford:27 afford_it:29
after:-35 after_$:-60 after__th:-26 after_the:32 again:23 again_$:-103 again_in:74 aguanta:-83 ahi:32 ahora:148
ahora_$:26 ahora_no:122 ahorita:35 ahorita_$:18 ahorita__puedo:22 ahorita_no:60 aire:-23 aire_$:-22 airport:44
al__que:25 al_rato:50 al_trabajo:-32 all:-50 all_$:-44 an:-28 and:-70 andamos:20 ando:131 ando__de:19 ando_en:28
ano:43 ano_$:20 anos:-18 another:24 any:-50 any_time:-20 anything:21 apenas:29 are:31 are__the:51 are_in:51
are_you:-26 asi:-56 asi_$:-21 ask:334 ask__again:55 ask__in:41 ask_again:18 ask_me:204 at:140 at_k:86 at_the:79
at_this:22 august:19 aviso:76 aviso_$:75 away:-40 away_$:-36 back:-32 back_$:-59 back__the:-18 back__you:76
back_in:-18 back_to:71 baje:25 baje_la:25 be:-60 been_on:-18 better:31 better_$:37 between:33 bien:23 bien_$:-27
bit:42 book:25 boss:43 boss_$:33 budget:54 buen:32 busy:99 but_not:19 by_$:-21 cada:-19 calendar:29 call_$:-20
call_me:-45 came:-27 can:-72 can__a:18 can__get:-25 can__me:-24 can__the:24 can__wait:-64 can_it:-55 cant:89
cant__in:-25 cant__it:37 cant__the:18 cant_come:-24 car:-19 car_$:-22 care:-25 care_of:-24 chance:50 checar:39
check:58 check_$:23 check__me:41 check_engine:-32 check_with:55 checks:32 cobraron:-29 come:-23 come_in:-19 comes:47
comes_$:26 como:-46 con:30 con_mi:69 confirmo:85 corto:29 cost:-24 count:-43 count_me:-42 couple:23 cuando:23
cuando__a:30 cuando__la:55 cuando__vuelta:-19 cuando_doy:-19 cuando_freno:-23 cuando_llegue:18 cuando_lo:-60
cuando_me:43 cuando_regrese:19 cuando_tenga:44 cuanto:-27 cuanto_me:-28 da:-28 dame:22 dan:24 day:-18 day_after:-20
days:99 days_$:88 de:59 de__no:60 de__proxima:-18 de_dinero:45 de_eso:26 de_la:19 de_las:-62 de_los:18 de_mes:-18
deja:35 dejame:56 dejaron:-20 deje:167 dejelo:-30 dejeme:103 del:-45 del_trabajo:-22 den:21 denme:24 despues:26
despues_$:70 despues__las:-50 despues_de:-25 despues_del:-46 di:-18 dia:42 dia_$:-25 dias:61 diciembre:-23
diciembre_$:-30 did:-23 digo:167 digo_$:117 dinero:89 dinero_$:89 do:-71 do__need:-32 do_i:-40 do_it:73 do_not:-24
do_they:-18 do_you:-33 dont:43 dont__it:43 dont__me:-30 dont_have:51 dont_know:58 dont_text:-28 dont_think:-23
dos:-29 down_$:-24 down_the:37 doy:-20 doy_vuelta:-19 drive__a:32 drive_for:34 driving_$:23 drop:-27 early:-20
easter_$:20 el:69 el__despues:-57 el__esta:18 el__mes:43 el__pero:23 el_aire:-22 el_ano:25 el_carro:23 el_dinero:20
el_lunes:-39 el_otro:46 el_pedal:-21 el_verano:41 en:151 en__noche:25 en__que:21 en__tarde:-19 en_enero:-61 en_la:-25
en_marzo:23 en_mayo:20 en_mil:32 en_otro:-18 end:-37 end__the:-32 end_of:-33 enero:-73 enero_$:-73 engine:-35
enough:-22 enough_$:-20 entonces:18 entregan:-32 entregan_$:-31 es:-35 escribo:-20 escuela:22 escuela_$:24
espacio:-32 espacio_$:-32 esperar:-56 espero:-40 esta:25 esta_semana:29 estan:-49 estan_$:-24 este:18 este_mes:30
estoy:48 estoy_bien:-25 estoy_de:43 estoy_en:28 estoy_manejando:-63 ever:-64 ever_$:-52 every:20 ex:-55 faltan:24
family:29 favor:-37 febrero:20 feel:26 feel_like:31 feliz:-43 feria:75 few:62 fiestas:18 fin:-26 fin_de:-23 find_a:18
first:53 first_$:69 fixed:-24 for:69 for_a:29 for_it:120 for_me:-82 for_my:22 for_now:43 for_sure:-19 for_that:-18
found:-23 freno:-21 friday:-43 frio:31 frio_$:31 get:46 get__on:45 get__to:82 get_a:-42 get_back:90 get_it:-21
get_me:-27 get_my:27 get_paid:68 gets:43 gimme:24 give:68 give__a:46 give_me:50 go:-70 go_away:-31 going__have:-25
going_on:39 going_to:-30 good_$:-22 got:74 got__wait:24 got_it:-20 got_to:126 gracias:-34 gracias__el:-18
gracias_por:-39 great:-25 gusto_$:18 guys:-21 hablamos:19 hablenme:33 hablo:95 hablo_$:79 hace:-51 hace_un:-23
had_to:-22 hang:19 happy:-46 has:-56 has__on:-18 has_been:-18 has_it:-25 hasta__hora:-31 hasta__me:28 hasta_las:-21
hasta_que:60 have:29 have__say:-21 have_time:79 her:-18 hit:71 hit__up:57 hit_k:25 hit_me:57 hits:25 hmm:23 hold:74
hold_off:37 hora:-44 horario:33 horario_$:23 horas_$:-24 hospital:26 hospital_$:27 how:-60 how__is:25 how_much:-31
hubby:55 husband:23 i__a:-28 i__it:-21 i__like:31 i__my:21 i__out:-25 i__paid:68 i__the:-21 i__to:18 i__you:32
i_can:23 i_cant:-40 i_feel:27 i_get:52 i_had:-20 i_hit:20 i_need:64 i_think:-44 i_want:-27 i_will:28 id:22 ill:38
ill__in:18 ill__you:79 ill_call:81 ill_do:56 ill_let:28 ill_pass:-70 ill_take:-66 im:103 im__of:42 im__the:30
im_back:19 im_free:25 im_good:-19 im_on:20 im_out:49 in:120 in_$:-99 in__fall:23 in__middle:57 in__spring:32
in__weeks:-30 in_a:29 in_another:41 in_june:96 in_the:62 in_tomorrow:-18 in_two:-47 insurance:42 is:58 is__at:33
is__the:-29 is_a:-18 is_on:-39 is_this:-23 is_tight:79 it:-103 it_$:84 it__after:-19 it__i:56 it__last:-27 it_at:28
it_back:-31 it_be:-25 it_for:31 it_in:-64 it_now:-66 it_to:-25 it_wait:-61 jaja:23 jale:-49 jale_$:-48 job:44
job_so:32 jueves:-26 june:102 june_$:79 junto:27 just:48 just_had:39 k:87 k_$:94 k_miles:-19 kinda:45 know:50
know_$:28 know__is:48 know_it:52 la:52 la__de:22 la__en:-55 la__vez:-57 la_escuela:22 la_noche:31 la_proxima:-41
la_semana:-20 la_tarde:-29 la_ultima:-27 labor:29 labor_day:32 las:-29 las_$:-24 las_mil:34 last:-97 last_month:-58
late:-23 later:20 later_$:71 later_one:-34 le:218 le__la:24 le_aviso:23 le_digo:66 les:247 les_aviso:48 let:134
let_me:111 let_you:56 lets:43 lets__it:-26 lets_out:41 light:-26 like_$:24 like_a:-18 like_it:26 list:-18
llamenme:-29 llegue:65 llegue_a:38 llegue_el:20 llevo:35 llevo_$:18 lo__a:36 lo__cuando:27 lo__de:-29 lo__en:-33
lo__pronto:-26 lo_entregan:-32 lo_llevo:37 lo_mas:-26 lo_vendi:-22 lo_voy:51 look:88 look_$:28 look_at:24 looks:23
looks_like:26 los:62 los_$:41 los_mil:50 lost:22 lost_my:40 luego:67 lugar:-40 lugar_$:-36 lunes:-49 make:-28
make_it:-19 manana:-23 manejando:-78 marca:-43 march:34 martes:-20 marzo:24 mas:39 mas_$:-78 mas__el:31
mas_adelante:98 mas_pronto:-33 mas_tarde:20 maybe:72 maybe__the:21 maybe_in:47 maybe_next:-20 mayo:26 mayo_$:31
me:121 me_$:-155 me__a:-23 me__al:-60 me__at:19 me__el:39 me__im:29 me__in:40 me__june:52 me__las:24 me__mi:21
me__my:39 me__this:-22 me__to:-23 me__week:70 me__when:-34 me_after:28 me_again:57 me_back:-35 me_cobraron:-29
me_da:-19 me_dan:28 me_dejaron:-26 me_den:19 me_in:72 me_llegue:20 me_lo:-30 me_next:76 me_off:-39 me_out:-27
me_paguen:35 me_some:27 me_then:71 me_tomorrow:29 me_up:40 me_van:-20 me_when:27 mejor:19 mensajes:-27 mes:-89
mes_$:-51 meses:47 meses_$:45 mi__y:32 middle:53 middle_of:54 mil:160 mil_$:23 mil_millas:43 miles:31 miles_$:28
millas_$:-20 momento:154 momento_no:62 monday:-19 mondays:-29 money_$:-48 money__tight:76 money_is:81 month_is:-31
months:27 more:-21 moving:53 much:-25 much_$:-32 mucho:62 muy:-34 my:83 my__back:-33 my__is:35 my__refund:50
my__says:26 my__so:32 my_boss:53 my_car:-37 my_ex:-22 my_husband:19 my_job:40 my_tax:58 my_wife:38 nada_$:-20 near:70
near_the:57 need:90 need_to:115 needed:-22 needed_$:-18 never:-22 new:50 new_year:27 next:26 next_month:30
next_week:21 ni:-31 night:-18 ninguno:35 no:49 no_$:-41 no__ahora:44 no__tiempo:41 no_es:29 no_gracias:52 no_le:-22
no_lo:-24 no_me:-51 no_need:-24 no_not:56 no_por:80 no_puedo:98 no_se:49 no_tengo:62 no_traigo:65 noche:35 not:141
not_$:-27 not__me:-58 not__month:18 not__now:66 not__the:38 not__this:60 not__to:-36 not__yet:67 not_a:39 not_for:-34
not_going:-47 not_happy:-22 not_my:-24 not_now:79 not_right:107 not_sure:123 not_til:18 not_today:87 not_yet:128
noviembre:41 now:168 now_$:63 now__me:19 nuevo:25 number:-31 nunca:-31 o:27 october:22 ocupo:-19 of:-73 of__month:-26
of_the:-41 of_town:53 off:-38 off_$:-32 off__now:19 off_for:19 off_this:-20 office:-35 oh:-25 ok:-45 on:75 on_$:-20
on__for:19 on__now:30 on_it:38 on_my:23 on_that:-22 on_the:-28 once:76 once_the:23 one:-54 one_$:-35 open:-35 opt:-54
opt_out:-26 or_so:42 otra:-27 otra_semana:34 otra_vez:-59 otro_$:-26 otro_dia:66 otro_mes:-22 out:-93 out_$:-63
out__town:53 overcharged:-22 paguen:35 paid:46 paid_$:21 para:60 para__lo:-18 para_cuando:-34 para_el:91 para_que:-29
parked:46 pasado:-24 pase:59 pass:-83 pass_$:-61 payday:38 paying:24 pedal:-25 pero:26 pero_ya:18 phone:-28 pie:-21
please_$:24 please__me:-29 por:53 por__no:28 por_ahora:98 por_favor:-28 por_que:-52 por_una:27 posible:-20
posible_$:-21 precio:-19 prices:-47 primavera:19 primero:33 pronto:-43 proxima:-41 proxima_semana:-39 puedan:-22
puedo_$:45 pues:-28 pues_$:-24 q:22 que:35 que__el:53 que__estan:-20 que__la:35 que_hora:-26 que_le:-21 que_no:-60
que_se:31 que_tan:-29 quieren:-22 quincena:31 quincena_$:25 quote:-18 rato_$:-30 reach:29 ready:18 ready_$:19
recuerdeme:29 regrese:19 regreso:24 remind:31 remind__in:31 remind_me:31 replaced:-25 respondo:-26 right:130
right_now:139 ring:-26 road:35 road_$:30 sabado:-25 save:49 saving:114 say:-52 say_no:-43 says:51 says_$:40
schedule:24 schedule_$:-43 school:51 school__out:42 school_lets:41 se__cuando:-23 se__la:30 se_lo:-25 season:39
second_$:24 see:90 see__my:85 semana:-39 semana_$:-32 semanas:51 semanas_$:55 sera:85 shes:22 si_no:20 si_si:18
sick:-18 sign:-29 sign_me:-26 skip:-32 skip_it:-30 slow:29 slow_down:39 so:32 sold_$:18 some:34 some_time:24
somebody:-18 sometime:-38 son:-24 sorry:-53 sorry_i:-36 spring:-24 spring_$:-37 still:-44 still__on:-56 stop_$:-22
stop_by:35 summer:27 summer_$:22 sunday:31 sunday_$:30 sure:-49 sure__me:-38 take:-99 take_my:-61 tal:26 tal_vez:26
talk:32 talk_to:34 taller:-24 tan:-18 tarde:-29 tarde_$:-37 tax:49 tax_$:-29 tax_refund:59 te:91 te__luego:-40
te_digo:70 tell:49 tell_you:63 tenga:42 tengan:-68 tengo:93 tengo_tiempo:41 termine:50 text:37 text_$:25 text_me:34
texts:-55 texts_again:-41 th_$:25 thanks:-21 thanksgiving:-21 thanksgiving_$:-22 that:-56 that_$:-33 the:27
the__again:-35 the__are:45 the__ask:32 the__is:42 the__lol:24 the__of:59 the__one:-18 the__time:-36 the_airport:44
the_car:54 the_fall:23 the_holidays:26 the_hospital:19 the_later:-48 the_middle:56 the_month:-28 the_new:19
the_road:41 the_schedule:-28 the_spring:32 the_texts:-36 the_week:-22 the_work:-20 then:146 then_$:87 there:-38
these:39 these_days:52 they:-37 thing:-33 thing_$:-39 things:49 think__it:83 think_about:57 this:33 this_is:-21
this_month:42 this_week:78 those:-35 though:24 though_$:26 thursday:-37 thursday_$:-30 tiempo:32 tienen:-39
tienen_$:-29 tight:78 tight_$:54 til_the:36 till:108 till_the:20 time:100 time_$:47 time__week:44 time_i:21 to:101
to__and:20 to__for:62 to__it:-19 to__me:-23 to__no:-23 to__on:20 to__the:47 to__up:44 to_ask:48 to_check:30 to_do:-24
to_get:-24 to_have:-29 to_my:37 to_say:-24 to_see:50 to_somebody:-22 to_talk:37 to_that:-20 to_the:-66 to_wait:72
to_you:45 todavia:20 todavia_no:52 today:68 today_$:64 tomorrow:39 tomorrow_$:63 tomorrow_after:-24 tonight:80
too__for:-46 took:-46 took__of:-21 took_care:-21 totaled:-20 town:41 town_$:38 trade:-23 traded:-33 traded__in:-25
traded_it:-25 traigo:59 trip:-27 try:136 try__in:22 try_me:133 twice:-23 two:-63 two_weeks:-54 ultima:-33
ultima_vez:-28 un:-85 un_mes:-67 una:-22 unas:25 unos:101 until:48 until_the:38 up:142 up_$:-18 up_for:68 up_in:23
ustedes:-36 va:23 va_en:41 vacaciones:31 vacation:52 van:-28 van_a:-22 vemos:26 vendi:-20 vendimos:-57 ver:52
ver_con:48 verano:32 verano_$:31 vez:-78 vez_$:-41 vez_me:-25 voy:20 voy_a:54 vuelta:-19 vuelta_$:-22 wait:22
wait_$:18 wait_for:23 was:-33 we:29 we_are:52 week:56 week_$:37 went:-30 were:45 what__i:20 what_is:-23 when:180
when__i:-24 when__slow:40 when_i:99 when_im:60 when_the:93 when_would:-37 when_you:-20 whenever:-60 where:-19 who:-46
who_you:-19 why:-37 why_not:-21 wife:22 wife__it:-31 will:67 will__you:41 will_it:-20 with_a:24 with_me:44
with_the:-25 work:-53 work_$:-71 worth:-32 would:-33 would_i:-30 y:69 y__digo:29 y_me:24 y_no:-31 y_te:52 ya__se:19
ya_les:101 ya_lo:-47 ya_me:-18 ya_no:-33 ya_que:83 ya_tengo:-22 yeah:-29 yes:-75 yet:243 yet_$:157 yo:128 yo_le:64
yo_les:74 you:-105 you_$:55 you__a:-24 you__i:18 you__im:43 you__me:-36 you__my:-34 you_all:-30 you_are:-19
you_can:-27 you_get:-20 you_guys:-21 you_know:55 you_open:-26 you_tomorrow:40 your:-62
"""
