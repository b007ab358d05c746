"""What speaks for and against `later`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "later"
BIAS = -123
WEIGHTS = """\
#abad:-24 #abla:28 #ablo:71 #abor:23 #abou:36 #acab:49 #acac:33 #acat:42 #aced:-18 #acia:-37 #aded:-28 #adel:57
#ador:19 #ados:18 #adua:24 #affo:28 #afte:-35 #agua:-61 #ague:31 #ahor:194 #aigo:45 #aire:-20 #airp:34 #ajes:-20
#alat:21 #alga:32 #alin:26 #alle:-33 #alon:-19 #alqu:-27 #alri:-37 #ambi:-28 #amen:-39 #amil:25 #amos:82 #ampe:26
#anan:-25 #anas:32 #ance:48 #ando:116 #anej:-64 #anks:-43 #anos:-18 #anot:23 #anta:-31 #ante:51 #anti:31 #anto:-32
#anul:19 #apen:28 #appe:-30 #appy:-36 #aqui:-21 #arca:-44 #arch:30 #arco:21 #arde:-27 #aren:24 #arge:-25 #aria:-20
#ario:27 #arke:36 #aron:-105 #arzo:78 #asad:-39 #asan:18 #ason:32 #asse:-18 #asta:24 #aste:19 #ater:26 #athe:30
#atio:51 #augu:21 #auto:-33 #aver:24 #avia:27 #avin:90 #avis:124 #avor:-31 #away:-43 #aybe:87 #ayda:41 #baby:22
#back:-42 #bado:-23 #baje:19 #ball:21 #band:36 #baro:-19 #bett:24 #betw:22 #bien:30 #bier:-18 #blam:33 #blen:27
#body:-24 #bols:-36 #book:21 #boss:34 #bout:35 #brar:-35 #brer:18 #bscr:-19 #budg:41 #buen:25 #busc:55 #busq:18
#busy:88 #cabe:43 #caci:26 #cada:-19 #call:-29 #camb:-26 #came:-32 #canc:38 #cant:103 #care:-26 #cati:33 #cele:29
#cena:37 #chan:-36 #char:-30 #chec:163 #ched:26 #choo:41 #cias:-36 #cked:-18 #cker:-21 #ckin:-18 #cole:-21 #comm:31
#como:-43 #conf:48 #cort:41 #cost:-22 #coun:-23 #ctob:18 #cual:-32 #cuar:27 #cuen:-25 #cuer:38 #cupa:46 #cupo:-21
#dame:24 #days:76 #ddle:45 #deja:33 #deje:185 #dela:63 #deme:50 #desp:43 #dget:41 #dias:39 #dier:-23 #digo:149
#dimo:-45 #dine:82 #dios:19 #dire:71 #dont:37 #drop:-32 #dule:28 #each:30 #eali:22 #earn:21 #easo:32 #eath:44
#ebod:-19 #ebre:18 #ecar:36 #eces:-20 #ecib:-19 #ecio:-36 #ecks:25 #ecue:37 #edal:-25 #eded:-18 #edes:-34 #edul:28
#eede:-18 #eels:-21 #eemb:-35 #egan:-33 #egre:36 #egue:48 #egun:48 #ejam:56 #ejan:-72 #ejar:-37 #ejel:-20 #ejem:105
#ejen:-29 #ejor:32 #elan:71 #eliz:-34 #elva:29 #elvo:26 #embe:31 #embo:-35 #embr:32 #emin:19 #emos:35 #empo:61
#empr:-21 #enas:31 #endi:-73 #enen:-49 #ener:-34 #enev:-63 #enga:-29 #engi:-33 #engo:79 #enme:45 #enou:-18 #ensa:106
#ento:104 #entr:-24 #epla:-19 #eran:44 #erar:-27 #erco:-22 #erem:18 #eren:-22 #eres:-38 #eria:60 #erio:19 #ermi:42
#eron:-60 #erse:43 #escr:19 #esda:-23 #eses:58 #espa:-19 #espe:-48 #espu:35 #esta:-50 #este:26 #esti:-18 #esto:36
#etim:-47 #ette:23 #etwe:22 #even:-18 #ever:-136 #eves:-32 #evis:43 #exts:-52 #fami:25 #favo:-31 #feli:-36 #feri:63
#ffic:-28 #ffor:25 #fice:-27 #fina:38 #firm:60 #firs:64 #fixe:-23 #ford:28 #foun:-22 #fren:-52 #frid:-38 #frio:24
#fron:-18 #fter:-35 #fund:-21 #gast:23 #gery:36 #gets:26 #ghty:-27 #gimm:20 #gine:-33 #give:58 #givi:-26 #goin:-18
#grac:-36 #grea:-20 #gres:37 #guan:-50 #guen:39 #guno:29 #gunt:57 #guys:-21 #habl:107 #hace:-67 #hank:-44 #happ:-50
#harg:-26 #have:46 #head:-18 #heca:40 #heck:60 #heco:62 #hedu:28 #heel:-21 #hene:-63 #here:-41 #hese:25 #hici:-24
#hink:28 #hits:23 #hold:71 #hone:-27 #hool:52 #hora:129 #hori:46 #hose:-27 #hosp:32 #houg:37 #hubb:55 #hurs:-44
#husb:22 #iaje:18 #ibir:-26 #ices:-31 #icie:-27 #iday:-28 #iddl:48 #iemb:22 #iemp:18 #iene:-71 #ierc:-22 #iero:-71
#ight:129 #iles:28 #imav:24 #imer:23 #imme:20 #imos:-52 #inal:46 #ince:30 #inco:20 #inda:41 #iner:81 #ings:33
#ingu:25 #insu:29 #inte:-56 #ione:33 #irmo:63 #irpo:34 #irst:64 #isar:-20 #isen:19 #isit:32 #ital:27 #ivin:-42
#ixed:-23 #jala:20 #jale:-34 #jame:53 #jand:-63 #jaro:-21 #jelo:-20 #jeme:103 #juev:-35 #june:86 #juni:18 #junt:114
#just:39 #kill:21 #kind:50 #king:-20 #know:55 #ksgi:-20 #labo:23 #lace:-24 #lama:-23 #lame:-22 #lamo:23 #land:18
#lant:58 #last:-101 #late:30 #leep:22 #legu:50 #lend:21 #lenm:29 #lent:-19 #lets:43 #levo:45 #ligh:-50 #ling:28
#list:-24 #llam:-52 #lleg:43 #llev:43 #lone:-18 #look:81 #lost:19 #lqui:-27 #lrig:-37 #ltan:19 #ltim:-36 #lueg:73
#luga:-32 #lune:-42 #make:-40 #mana:-27 #mand:-18 #mane:-66 #mart:-25 #marz:78 #mati:-26 #mave:24 #mayb:87 #mayo:27
#mbia:-24 #mbol:-35 #mbre:25 #mebo:-19 #mejo:32 #mell:-18 #menm:-32 #mens:-30 #ment:162 #mero:31 #mese:58 #meti:-53
#midd:48 #mier:-23 #mily:25 #mine:37 #mmer:45 #mmit:31 #mome:178 #mond:-49 #mone:24 #mont:34 #more:-41 #morr:30
#movi:44 #mped:26 #mpor:28 #mpre:-32 #much:32 #myse:-20 #nals:30 #nana:-24 #ncel:35 #ncen:37 #nces:-34 #nche:-23
#ndam:20 #nday:-25 #ndim:-43 #near:53 #need:57 #neja:-63 #nero:50 #neve:-82 #next:39 #nfir:62 #ngan:-62 #ngin:-34
#ngun:25 #nigh:36 #nksg:-20 #noch:26 #noug:-18 #novi:29 #nsaj:-29 #nsan:35 #nsar:143 #nsur:29 #ntam:19 #ntan:34
#ntar:47 #nten:47 #nter:-63 #nths:22 #ntil:37 #ntit:40 #ntra:29 #ntre:-50 #nudg:27 #nuev:18 #numb:-33 #nume:-25
#nunc:-27 #obar:-21 #oble:-19 #obra:-39 #obre:30 #oche:23 #ocke:-21 #octo:26 #ocup:27 #oday:59 #offi:-27 #oing:-26
#oint:-20 #ojal:23 #okin:-20 #oles:-22 #olso:-35 #omat:-25 #omeb:-19 #omen:153 #omes:45 #omet:-67 #ommi:31 #omor:30
#once:87 #onda:-52 #ondo:-37 #ones:21 #oney:24 #onfi:57 #onig:60 #onth:37 #onto:-31 #ooki:-20 #ooks:19 #open:-40
#oper:45 #orad:30 #orar:34 #orit:43 #orro:33 #orry:-48 #orth:-27 #orto:27 #ospi:32 #otal:-24 #othe:21 #oton:28
#otra:-22 #ough:21 #ould:-43 #ound:-22 #ount:-31 #oupl:20 #over:23 #ovie:33 #ovin:48 #oxim:-36 #paci:-19 #pagu:31
#paid:37 #para:93 #park:33 #pase:43 #pass:-89 #payd:41 #payi:18 #peda:-25 #pens:112 #pera:28 #phon:-33 #pita:27
#plac:-20 #plan:18 #plat:25 #poin:-20 #pond:-24 #port:25 #pped:-20 #prec:-22 #preg:57 #pren:-19 #pric:-68 #prim:41
#pron:-32 #prox:-33 #pued:-45 #punt:-20 #quea:-18 #qued:-24 #quie:-61 #quin:30 #quiz:36 #rada:39 #rade:-57 #radu:25
#raig:46 #ramo:27 #ranc:29 #rand:-23 #rano:25 #rari:34 #raro:-27 #rcha:-21 #rcol:-22 #rdem:24 #reac:27 #reci:-48
#recu:43 #reem:-35 #rega:-24 #regr:37 #regu:54 #remi:18 #rend:-19 #reno:-43 #rent:24 #repl:-29 #rero:18 #rese:25
#resp:-33 #revi:42 #rged:-20 #rger:38 #ribe:-18 #rice:-61 #rida:-34 #righ:85 #rima:24 #rime:23 #ring:-47 #rita:39
#rked:39 #rmin:45 #rned:-19 #road:26 #roba:-19 #ront:-50 #roxi:-36 #rpor:32 #rque:-23 #rren:-18 #rrow:30 #rsda:-38
#rtes:-25 #rtos:-18 #saba:-24 #sado:-20 #saje:-29 #sale:-23 #salg:28 #sand:20 #save:42 #savi:94 #says:40 #sban:22
#sche:28 #scho:52 #sday:-62 #seas:82 #self:-27 #seme:35 #senm:18 #sept:27 #sera:63 #sgiv:-20 #shes:18 #sign:-29
#skip:-27 #slee:22 #slow:23 #smel:-18 #snow:20 #some:-64 #sorr:-45 #spac:-25 #sper:-46 #spit:25 #spon:-33 #spue:35
#ssed:-29 #stan:-54 #sted:-64 #ster:36 #stil:-39 #stop:-20 #stoy:67 #subs:-19 #summ:45 #sund:24 #sura:29 #sure:-41
#surg:34 #swam:26 #tado:28 #take:-91 #talk:36 #tall:-26 #tand:26 #tard:-31 #tede:-34 #tell:47 #tena:22 #teng:70
#tenm:20 #tere:-36 #term:48 #text:-43 #than:-49 #that:-58 #them:-20 #then:132 #thes:25 #they:-35 #thin:36 #this:24
#thos:-26 #thou:51 #thur:-46 #tiem:34 #tien:-60 #tigh:75 #till:27 #tima:-37 #time:37 #tion:41 #tira:-21 #tito:49
#tobe:18 #toda:68 #toma:-21 #tomo:30 #toni:60 #tono:29 #took:-42 #tota:-24 #town:34 #trad:-35 #trai:49 #treg:-29
#trip:-20 #tter:24 #tues:-31 #twee:22 #twic:-19 #ualq:-27 #uand:32 #uant:-81 #uare:31 #ubby:55 #ubsc:-19 #ucho:47
#udge:67 #ueda:-39 #uede:-41 #uego:72 #uelt:-25 #uelv:69 #uent:-26 #uerd:38 #uesd:-18 #uest:-43 #ueve:-35 #uevo:18
#ugar:-32 #ugus:21 #uier:-60 #uinc:36 #uiza:36 #ulti:-37 #umbe:-33 #umer:-25 #umme:45 #unca:-27 #unda:18 #unes:-42
#unos:86 #unta:72 #unte:40 #unti:46 #unto:31 #upad:46 #uple:20 #uran:29 #urge:31 #ursd:-38 #usba:22 #usco:47 #usqu:18
#uste:-61 #utom:-25 #vaca:75 #vemo:32 #vend:-61 #vera:54 #vers:39 #viem:29 #ving:100 #vise:33 #visi:31 #viso:108
#vuel:30 #wamp:26 #weat:36 #week:68 #ween:22 #well:-21 #went:-30 #were:44 #what:-18 #whee:-21 #when:117 #wher:-21
#wice:-19 #wife:23 #will:67 #work:-42 #wort:-28 #woul:-37 #xima:-38 #yday:41 #yeah:-30 #your:-65 #ysel:-20
%again_later:336 %again_later%away:135 %again_later%busy:98 %again_later%call_off:54 %again_later%car:74
%again_later%car_part:-52 %again_later%do_it:82 %again_later%doubt:25 %again_later%fails:25 %again_later%family:82
%again_later%how_long:-21 %again_later%leave_me:56 %again_later%lift:-65 %again_later%money:64 %again_later%noise:-46
%again_later%odometer:32 %again_later%on_way:-35 %again_later%opening:-35 %again_later%pay_day:143
%again_later%phone:-69 %again_later%place:-47 %again_later%refuse:142 %again_later%season:50 %again_later%shake:-39
%again_later%shift_it:34 %again_later%start_again:-31 %again_later%thanks:-72 %again_later%who:-29 %agree:-63
%agree%bring:-95 %agree%busy:-21 %agree%call_off:22 %agree%do_it:29 %agree%family:26 %agree%gone_car:27
%agree%message:33 %agree%on_way:-38 %agree%question:-50 %agree%refuse:124 %agree%thanks:-21 %away:252 %away%bring:38
%away%call_off:83 %away%car:30 %away%car_part:-52 %away%doubt:35 %away%elsewhere:27 %away%leave_me:-48 %away%lift:-33
%away%noise:-20 %away%on_way:-35 %away%pay_day:27 %away%phone:40 %away%question:121 %away%refuse:-77 %away%season:31
%away%shift_it:31 %away%staff:-19 %away%start_again:26 %bad:-27 %bad%bring:36 %bad%busy:34 %bad%refuse:-21
%bring%busy:24 %bring%call_off:37 %bring%do_it:-23 %bring%doubt:51 %bring%elsewhere:-18 %bring%money:49
%bring%pay_day:50 %bring%phone:27 %bring%question:-58 %bring%refuse:47 %bring%season:44 %bring%shift_it:19 %busy:172
%busy%gone_car:73 %busy%how_long:46 %busy%lift:24 %busy%pay_day:42 %busy%phone:-22 %busy%season:33 %busy%shift_it:-26
%busy%start_again:42 %busy%wrong_one:18 %call_off:41 %call_off%car:-56 %call_off%car_part:-22 %call_off%do_it:-18
%call_off%doubt:27 %call_off%elsewhere:-42 %call_off%how_long:24 %call_off%lift:-65 %call_off%message:-59
%call_off%money:57 %call_off%pay_day:21 %call_off%phone:-37 %call_off%place:-23 %call_off%question:45
%call_off%refuse:54 %call_off%season:143 %call_off%shift_it:-42 %call_off%start_again:-18 %call_off%thanks:21
%car:-89 %car%car_part:-41 %car%gone_car:-43 %car%money:-24 %car%odometer:18 %car%pay_day:-30 %car%place:43
%car_part:-131 %car_part%fails:-24 %car_part%family:18 %car_part%leave_me:18 %car_part%money:38 %car_part%noise:-24
%car_part%on_way:-21 %car_part%pay_day:-22 %car_part%phone:-36 %car_part%question:-27 %car_part%refuse:60
%car_part%season:26 %car_part%shake:-29 %car_part%smoke_smell:-18 %car_part%start_again:-26 %do_it:-111
%do_it%doubt:30 %do_it%elsewhere:-36 %do_it%gone_car:-26 %do_it%message:47 %do_it%pay_day:-52 %do_it%question:31
%do_it%refuse:-22 %do_it%season:-27 %do_it%shift_it:-18 %do_it%start_again:22 %do_it%wrong_one:-43 %doubt:138
%doubt%elsewhere:-40 %doubt%family:46 %doubt%lift:21 %doubt%message:22 %doubt%money:-26 %doubt%odometer:69
%doubt%on_way:46 %doubt%pay_day:26 %doubt%refuse:63 %doubt%season:98 %doubt%shift_it:-25 %doubt%staff:18
%doubt%wrong_one:-66 %elsewhere:-68 %elsewhere%gone_car:-19 %elsewhere%message:-28 %elsewhere%odometer:38
%elsewhere%phone:-19 %elsewhere%refuse:-26 %elsewhere%season:18 %elsewhere%shift_it:-18 %elsewhere%staff:-30
%elsewhere%wrong_one:-38 %fails:-76 %family:21 %family%odometer:19 %family%phone:20 %family%question:25
%family%refuse:-26 %family%start_again:58 %family%wrong_one:36 %gone_car:-103 %gone_car%how_long:44
%gone_car%money:25 %gone_car%pay_day:-25 %gone_car%question:39 %gone_car%refuse:38 %gone_car%shift_it:-38
%gone_car%start_again:-19 %how_long%lift:18 %how_long%pay_day:32 %how_long%question:-33 %how_long%refuse:38
%how_long%shift_it:-36 %how_long%wrong_one:20 %leak:-36 %leave_me:-38 %leave_me%message:-33 %leave_me%money:35
%leave_me%odometer:52 %leave_me%opening:33 %leave_me%pay_day:-39 %leave_me%place:34 %leave_me%question:31 %lift:-83
%lift%money:-18 %lift%pay_day:-74 %lift%season:-88 %lift%start_again:18 %lift%wrong_one:34 %machine:-40
%meaning%pay_day:36 %message:-74 %message%on_way:31 %message%pay_day:-27 %message%question:32 %message%refuse:-41
%message%start_again:-69 %message%thanks:-27 %message%wrong_one:-52 %money%odometer:-31 %money%pay_day:32
%money%place:30 %money%refuse:21 %money%season:54 %money%shift_it:-26 %money%start_again:-29 %money%wrong_one:18
%noise:-84 %noise%question:-41 %odometer%opening:36 %odometer%pay_day:-23 %odometer%phone:-34 %odometer%question:58
%odometer%shift_it:67 %odometer%staff:33 %on_way:-64 %on_way%pay_day:22 %on_way%place:-24 %on_way%question:-42
%on_way%season:32 %on_way%start_again:25 %opening:-40 %opening%question:-43 %pay_day:248 %pay_day%question:163
%pay_day%refuse:75 %pay_day%season:-22 %pay_day%shift_it:41 %pay_day%start_again:18 %pay_day%wrong_one:60 %phone:-134
%phone%question:-21 %phone%refuse:-21 %phone%season:95 %phone%shift_it:-27 %phone%staff:-36 %phone%wrong_one:34
%place:-41 %place%question:-29 %place%refuse:47 %question:-35 %question%season:133 %question%shake:-48
%question%smoke_smell:-21 %question%start_again:-19 %question%who:-46 %question%wrong_one:21 %refuse:-94
%refuse%season:144 %refuse%staff:-44 %refuse%start_again:-54 %refuse%thanks:-56 %refuse%who:-19 %season:285
%season%shift_it:96 %season%start_again:47 %season%thanks:19 %season%wrong_one:77 %shake:-66 %shift_it%wrong_one:-37
%smoke_smell:-70 %staff:-49 %staff%wrong_one:-20 %start_again:-77 %thanks:-67 %who:-78 %wrong_one:-40 @?:-183
@after_visit:-134 @car:-45 @confirm:-247 @confirm_stop:-89 @later:407 @nothing:-202 @odometer:42 @offers:-96
@reading:-139 @time:-109 @times:-98 @walk_in:-87 ^_about:-21 ^_after:117 ^_aguanta:-68 ^_ahora:82 ^_ahorita:37
^_al:75 ^_ando:74 ^_any:-29 ^_apenas:27 ^_asi:-23 ^_ask:60 ^_at:80 ^_call:-35 ^_can:-53 ^_cant:87 ^_check:21
^_como:-25 ^_count:-28 ^_cuando:85 ^_cuanto:-48 ^_de:21 ^_dejame:38 ^_deje:124 ^_dejeme:103 ^_despues:46 ^_do:-66
^_dont:50 ^_el:-62 ^_en:86 ^_end:-30 ^_es:-27 ^_eso:-22 ^_estoy:69 ^_feliz:-27 ^_first:-36 ^_for:-18 ^_get:-23
^_gimme:20 ^_give:34 ^_go:-22 ^_got:80 ^_gracias:-30 ^_hablenme:29 ^_hace:-25 ^_had:-21 ^_hang:22 ^_hmm:22 ^_hold:51
^_how:-62 ^_i:-45 ^_ill:96 ^_is:-41 ^_it:-48 ^_just:44 ^_la:-78 ^_le:-35 ^_let:131 ^_llamenme:-23 ^_lo:78 ^_luego:45
^_mas:134 ^_maybe:62 ^_me:-118 ^_mi:20 ^_my:-74 ^_need:97 ^_ninguno:19 ^_not:165 ^_oh:-19 ^_ok:-45 ^_on:34 ^_once:47
^_opt:-57 ^_otro:51 ^_please:-36 ^_por:-21 ^_puedo:-78 ^_que:-73 ^_ring:-19 ^_se:-62 ^_si:-82 ^_sign:-20 ^_sorry:-38
^_still:-18 ^_sure:-126 ^_tengo:65 ^_text:41 ^_the:-100 ^_this:-25 ^_too:41 ^_traded:-22 ^_try:65 ^_va:29 ^_wait:29
^_were:47 ^_what:-66 ^_when:112 ^_whenever:-37 ^_why:-25 ^_will:28 ^_y:-29 ^_yeah:-22 ^_yes:-54 ^_yo:104 ^_you:-82
a__is:-22 a__mil:80 a__of:-30 a__or:26 a__thing:23 a__time:47 a__weeks:52 a_bit:46 a_call:-19 a_couple:20 a_few:52
a_good:52 a_los:45 a_mi:-43 a_month:28 a_que:21 a_while:29 about:36 about_it:49 acabe:38 add:-22 adelante:32
afford:28 afford_it:30 after:-30 after_$:-67 after__day:25 after__th:-23 after_the:26 again_$:-103 again_in:63
again_on:19 aguanta:-69 ahi:30 ahora:150 ahora_$:25 ahora_no:110 ahorita:39 ahorita__puedo:22 ahorita_no:64 aire:-20
aire_$:-18 airport:34 al:31 al__que:18 al_rato:49 al_trabajo:-25 all:-58 all_$:-34 an:-35 and:-76 and_not:-18
anda:-20 andamos:18 ando:133 ando__de:19 ando_bien:57 ando_en:19 ando_fuera:37 ano:35 another:23 any:-49 apenas:28
are:27 are__the:41 are_in:41 are_you:-19 as:-19 as_well:-19 asi:-60 asi_$:-29 ask:313 ask__again:47 ask__in:41
ask_me:196 at:143 at__moment:54 at__time:19 at_k:110 at_my:19 at_the:65 at_this:18 august:21 avisar:-18 aviso:97
aviso_$:84 away:-43 away_$:-27 baby:23 back:-40 back_$:-51 back__the:-22 back__you:61 back_from:29 back_in:-18
back_to:61 baje:19 baje_la:18 be:-52 before_i:18 better:24 better_$:25 between:22 bien:27 bien_$:-23 bit:47 boss:34
boss_$:26 budget:41 buen:31 busco:47 busco_$:45 busy:88 by_$:-22 cada:-19 calendar:23 call:-22 call_me:-46 came:-28
can:-64 can__get:-26 can__me:-22 can__tell:27 can__the:18 can__wait:-54 can_i:-20 can_it:-47 cancel_$:-18 cancele:32
cant:101 cant__in:-21 cant__it:26 cant__the:20 cant_come:-19 car:-18 care:-25 care_of:-24 carro_esta:20 chance:29
checar:38 check:62 check_$:18 check__me:36 check_engine:-28 check_with:52 checks:25 checks_$:26 checo:62 cobraron:-25
cobre:37 come:-18 comes:45 comes_$:21 como:-42 con:44 con_el:18 con_mi:70 confirmo:63 confirmo_$:56 corto:28 cost:-22
count:-30 count__in:-25 count_me:-30 couple:20 cualquier:-20 cuando:33 cuando__a:19 cuando__del:18 cuando__la:47
cuando__vuelta:-19 cuando_doy:-19 cuando_freno:-27 cuando_lo:-52 cuando_me:41 cuando_regrese:23 cuando_salga:23
cuando_tenga:35 cuanto:-28 cuanto_me:-37 da:-26 dan:19 day_after:-22 days:78 days_$:67 de:75 de__no:47 de__que:-18
de_dinero:37 de_eso:18 de_la:28 de_las:-37 deja:26 dejame:53 dejaron:-21 deje:128 dejelo:-20 dejeme:103 deme:27
denme:18 despues:45 despues_$:62 despues__las:-41 despues_del:-39 di:-18 dia:22 dia_$:-24 dias:39 did:-22 digo:154
digo_$:121 dinero:84 dinero_$:80 dios:20 do:-66 do__need:-24 do_i:-34 do_it:53 do_not:-23 do_you:-31 dont:37
dont__it:33 dont__me:-23 dont_have:40 dont_know:47 dont_text:-22 dos:-28 down:18 down_the:28 doy:-21 doy_vuelta:-19
drive__a:23 drive_for:24 driving_$:18 drop:-29 easter_$:18 el:46 el__despues:-44 el__mes:44 el__pasado:-19
el_aire:-18 el_ano:24 el_aviso:-24 el_carro:22 el_dinero:22 el_jueves:-19 el_lunes:-31 el_momento:26 el_otro:42
el_pedal:-22 el_sabado:-18 el_verano:33 en:151 en__dias:42 en__noche:23 en__que:18 en__si:25 en__y:27 en_enero:-24
en_la:-39 en_marzo:46 en_mayo:20 en_mil:36 en_noviembre:21 en_unos:49 end:-21 end__the:-30 end_of:-21 enero:-33
enero_$:-52 engine:-33 enough:-18 entre:-21 entregan:-24 entregan_$:-24 es:-45 esa:-18 escribo_$:27 escuela_$:19
eso:-22 espacio:-23 espacio_$:-23 esperar:-41 espero:-29 esta_semana:25 estan:-44 este_mes:27 estoy:60 estoy_bien:-24
estoy_de:40 estoy_en:22 estoy_manejando:-51 ever:-47 ever_$:-37 ex:-39 faltan:19 family:25 favor:-32 febrero:18
feel:18 feel_like:22 feliz:-34 feria:63 few:51 fin:-27 fin_de:-22 finals:30 first:64 first_$:90 fixed:-23 for:37
for_a:26 for_it:93 for_me:-75 for_now:41 found:-22 freno:-29 friday:-38 frio:24 frio_$:24 front:-18 fuera_$:18 get:64
get__on:36 get__to:76 get_a:-39 get_back:89 get_it:-22 get_me:-21 get_my:29 get_paid:59 get_the:-28 gets:26 gimme:20
gimme_a:21 give:58 give__a:43 give_me:46 go:-56 go_away:-21 going:-18 going_on:30 going_to:-30 good_$:-18 got:63
got__wait:21 got_a:-19 got_it:-25 got_to:115 gracias:-36 gracias__el:-21 gracias_por:-43 great:-19 guys:-20
hablamos:26 hablamos_$:25 hablenme:29 hablo:71 hablo_$:55 hace:-61 hace_un:-29 had_to:-20 hang:21 happy:-35 has:-40
hasta__hora:-27 hasta__me:29 hasta_las:-18 hasta_que:71 have:36 have_time:68 hit:65 hit__up:48 hit_k:21 hit_me:50
hits:23 hmm:22 hold:61 hold_off:41 hold_that:28 hora:-48 horario:31 horas_$:-20 hospital:27 hospital_$:26 how:-48
how_much:-31 hubby:52 husband:22 i:-27 i__a:-30 i__it:-21 i__like:22 i__my:26 i__out:-32 i__paid:60 i__the:-20
i__you:31 i_can:23 i_cant:-31 i_feel:19 i_get:51 i_know:19 i_need:55 i_think:-36 i_want:-24 i_will:22 ill:60
ill__back:19 ill__it:19 ill__out:20 ill__you:87 ill_be:-18 ill_call:63 ill_do:50 ill_get:20 ill_let:32 ill_pass:-66
ill_take:-50 im:95 im__of:46 im__the:22 im_back:21 im_down:-32 im_free:20 im_out:51 in:114 in_$:-90 in__bit:44
in__fall:24 in__middle:50 in__spring:23 in__weeks:-18 in_a:48 in_another:33 in_june:78 in_the:39 in_two:-32
insurance:29 interested:-19 is:48 is__at:28 is__for:18 is__the:-20 is_a:-18 is_on:-33 is_over:23 is_this:-22
is_tight:67 it:-104 it_$:92 it__after:-20 it__i:48 it__last:-23 it__now:32 it__to:-21 it_at:23 it_back:-33 it_be:-21
it_for:34 it_in:-54 it_now:-46 it_to:-26 it_wait:-52 it_when:40 jale:-34 jale_$:-36 job:22 job_so:23 jueves:-32
june:86 june_$:60 junio:18 junto:29 just:39 just__a:18 just_had:41 k:95 k_$:102 kinda:44 know:61 know_$:34
know__is:37 know_it:40 la:49 la__de:18 la__en:-37 la__quincena:23 la__semana:-26 la__vez:-52 la_noche:28
la_proxima:-37 la_tarde:-24 la_ultima:-28 labor:23 labor_day:25 las_$:-27 las_mil:51 last:-100 last_month:-56
later:27 later_$:63 later_one:-28 le:204 le__la:19 le_aviso:51 le_digo:63 le_faltan:18 le_hablo:52 les:230
les_aviso:48 les_digo:40 let:152 let__look:42 let__see:38 let_me:129 let_you:53 lets:43 lets__it:-22 lets_out:37
light:-30 llamenme:-32 llegue:54 llegue__las:19 llegue_a:29 llevo:45 llevo_$:36 lo__a:31 lo__cuando:18 lo__de:-25
lo__en:-34 lo__pronto:-25 lo_de:22 lo_entregan:-24 lo_llevo:46 lo_mas:-27 lo_vendi:-24 lo_voy:46 look:92 look_$:19
look__my:22 look_at:22 looks_like:19 los:48 los_$:29 los_mil:49 lost:19 lost_my:33 luego:73 luego__digo:24
luego_le:20 luego_les:36 lugar:-32 lugar_$:-27 lunes:-41 make:-37 make_it:-27 manana:-23 manejando:-68 marca:-32
march:36 martes:-24 marzo:78 marzo_$:28 mas:44 mas_$:-65 mas__el:21 mas_adelante:86 mas_para:32 mas_pronto:-31
mas_tarde:21 maybe:87 maybe_in:36 mayo:25 mayo_$:19 me:134 me_$:-126 me__about:21 me__al:-43 me__at:23 me__el:44
me__im:30 me__in:36 me__june:47 me__las:19 me__my:34 me__on:28 me__to:-21 me__week:59 me__what:27 me__when:-19
me__you:-21 me_after:22 me_again:54 me_back:-40 me_cobraron:-25 me_dan:21 me_dejaron:-24 me_in:84 me_lo:-37
me_look:42 me_marca:-41 me_next:61 me_now:-24 me_off:-29 me_out:-21 me_paguen:35 me_see:38 me_some:22 me_then:74
me_tomorrow:31 me_up:38 me_van:-21 me_when:25 mejor:26 mejor_$:18 mensajes:-20 mes:-70 mes_$:-45 meses:42 meses_$:36
mi__y:34 middle:48 middle_of:49 miercoles:-21 mil:153 mil_$:28 mil_millas:43 miles_$:23 millas_$:-20 moment:54
momento:126 momento_no:50 monday:-30 mondays:-20 money_$:-28 money__tight:64 money_is:70 month_is:-22 month_or:32
months:22 more:-29 moving:48 much_$:-26 mucho:47 muy:-32 my:60 my__back:-29 my__is:32 my__refund:33 my__says:21
my__so:23 my_boss:43 my_car:-35 my_husband:19 my_job:32 my_refund:-18 my_schedule:58 my_tax:45 my_wife:29 myself:-20
myself_$:-18 nada_$:-26 near:55 near__car:45 near_the:45 need:85 need_to:102 needed:-18 never:-19 new:48 new_year:20
next:39 next_month:29 ni:-27 ninguno:29 no:49 no_$:-38 no__ahora:46 no__tiempo:38 no__yet:71 no_es:25 no_gracias:46
no_me:-48 no_need:-22 no_not:39 no_por:76 no_puedo:89 no_se:49 no_tengo:64 no_traigo:54 noche:29 not:149 not_$:-28
not__me:-46 not__now:63 not__this:42 not__to:-26 not__yet:62 not_a:28 not_for:-28 not_going:-35 not_my:-22 not_now:83
not_right:99 not_sure:106 not_til:19 not_today:72 not_worth:-27 not_yet:117 noviembre:29 now:181 now_$:82 now__me:19
nudge:27 nuevo:25 number:-31 numero:-18 nunca:-26 october:18 of:-59 of__month:-29 of_the:-36 of_town:50 off:-21
off_$:-24 off__now:19 off_for:19 office:-27 oh:-19 ok:-49 on:55 on_$:-19 on__now:20 on__refund:-45 on_it:34 on_my:41
on_that:-19 once:77 once_the:27 one:-55 one_$:-28 only_at:19 open:-23 opt:-64 opt_out:-33 or_so:38 otono:29 otra:-31
otra_quincena:19 otra_vez:-57 otro_$:-25 otro_dia:51 out:-102 out_$:-71 out__town:50 out_of:18 paguen:35 paid:37
paid_$:22 para:85 para__lo:-20 para_cuando:-33 para_el:70 para_la:23 para_nada:-20 para_que:-32 parked:39 pasado:-25
pasando:22 pase:46 pass:-74 pass_$:-56 payday:36 paying:18 pedal:-25 pero:21 pero__que:18 phone:-28 please_$:26
please__me:-23 por:40 por__no:27 por_ahora:104 por_favor:-26 por_que:-32 por_una:23 preguntenme:24 prices:-33
primavera:24 primero:38 pronto:-31 proxima:-37 proxima_semana:-38 puedan:-18 puede:-18 puedo_$:44 pues:-22 que__el:45
que__la:37 que_cobre:18 que_hora:-26 que_le:-23 que_no:-38 que_pase:43 que_se:20 quincena:37 quincena_$:24 quiza:25
rato_$:-20 rato_que:18 reach:31 ready:18 ready_$:20 recuerdeme:21 reembolso:-35 regrese:22 regreso:18 remind:34
remind__in:25 remind_me:35 replaced:-18 respondo:-24 right:122 right_now:134 ring:-22 road:23 road_$:24 robaron:-19
sabado:-27 sale:-22 salga:32 save:42 saving:94 say:-28 say_no:-27 says:40 says_$:30 schedule:28 schedule_$:-25
school:46 school__out:40 school_lets:40 se:-25 se__cuando:-21 se__la:24 season:36 second_$:23 see:77 see__my:76
semana:-44 semana_$:-29 semanas:39 semanas_$:45 sera:64 shes:19 sign:-27 sign_me:-24 skip:-27 skip_it:-24 slow:24
slow_down:32 some:23 some_time:21 somebody:-19 sometime:-42 son:-26 sorry:-45 sorry_i:-28 soy:-20 spring_$:-24
still:-38 still__on:-45 still_waiting:-45 stop_$:-20 stop_by:24 summer:45 summer_$:18 sunday:25 sunday_$:22 sure:-38
sure__me:-29 surgery:36 swamped:26 take:-82 take_my:-44 tal:21 tal_vez:23 talk:35 talk__my:43 talk_to:31 taller:-22
tarde:-24 tarde_$:-29 tax:60 tax_$:-23 tax_refund:39 te:76 te__luego:-33 te_digo:47 te_escribo:-24 tell:47
tell_you:58 tenga:35 tengan:-44 tengo:80 tengo_tiempo:38 termine:44 text:31 text_$:19 text_me:24 texts:-52
texts_again:-38 th_$:39 thanks:-21 thanksgiving:-20 thanksgiving_$:-21 that:-58 that_$:-31 the:21 the__again:-30
the__are:42 the__ask:26 the__ill:38 the__is:31 the__lol:18 the__of:61 the__one:-21 the__time:-26 the_airport:34
the_baby:19 the_car:47 the_fall:24 the_holidays:22 the_hospital:18 the_later:-38 the_middle:49 the_moment:54
the_month:-31 the_road:32 the_schedule:-25 the_spring:21 the_st:19 the_texts:-32 the_week:-18 them:-20 then:132
then_$:96 there:-31 these:25 these_days:39 they:-35 thing:-23 thing_$:-32 things:40 think:20 think__it:72
think_about:53 this:24 this_is:-27 this_month:42 this_week:66 those:-26 though:21 though_$:26 thursday:-38
thursday_$:-24 tiempo:30 tiene_millas:-29 tienen:-40 tienen_$:-28 tight:75 tight_$:43 til:56 til_the:37 till:74
time:86 time_$:44 time__week:40 to:93 to__all:-21 to__for:49 to__it:-19 to__me:-26 to__on:19 to__the:40 to__to:22
to__up:36 to__what:35 to__wife:39 to_ask:45 to_be:-26 to_check:29 to_me:19 to_my:20 to_see:46 to_somebody:-18
to_talk:34 to_the:-59 to_wait:61 to_you:38 todavia_no:51 today:60 today_$:53 tomorrow:30 tomorrow_$:48
tomorrow_after:-23 tonight:60 tonight_$:51 too__for:-37 too_much:20 took:-42 took__of:-18 took_care:-18 town:35
town_$:33 traded:-28 traded__in:-22 traded_it:-22 traigo:49 try:126 try__in:28 try_me:118 twice:-19 two:-51
two_weeks:-40 ultima:-32 ultima_vez:-26 un:-82 un__mas:-50 un_mes:-60 una:-29 unos:86 unos_meses:21 until:37
until_the:35 up:120 up_for:53 up_in:23 ustedes:-34 va:18 va__mil:22 va_en:44 vacaciones:33 vacation:45 vacation_$:43
van:-25 vemos:32 vendi:-24 vendimos:-43 ver:42 ver__mi:51 ver_con:51 verano:34 verano_$:23 vez:-89 vez_$:-43
vez_me:-22 viaje:18 voy_a:51 vuelta:-23 vuelta_$:-22 wait__my:27 was:-48 we:34 we_are:41 weather:36 week:51 week_$:48
weeks_$:22 well:-21 went:-29 were:44 what__i:22 what_my:65 when:182 when__i:-25 when__slow:33 when_i:96 when_im:46
when_the:88 when_would:-29 when_you:-25 whenever:-63 where:-21 who:-40 who_you:-19 why:-44 why_not:-23 wife:18
wife_$:23 wife__it:-23 will:67 will__you:33 will_it:-18 with_a:19 with_me:36 with_tax:-29 with_the:-21 work:-37
work_$:-53 worth:-28 would:-33 would__get:-21 would_i:-19 y:68 y_no:-29 y_te:33 ya__me:21 ya__pase:39 ya_les:74
ya_lo:-36 ya_me:-18 ya_no:-28 ya_que:86 yeah:-30 yes:-65 yet:238 yet_$:142 yet__me:49 yo:145 yo__aviso:50 yo_le:76
yo_les:75 you:-95 you_$:45 you__a:-19 you__i:18 you__im:30 you__my:-31 you_all:-21 you_are:-18 you_can:-28
you_get:-19 you_guys:-20 you_know:49 you_tomorrow:30 you_when:61 your:-59
"""
