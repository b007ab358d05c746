"""What speaks for and against `later`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "later"
BIAS = -135
WEIGHTS = """\
#abie:-25 #abla:36 #ablo:103 #abor:43 #abou:46 #acab:67 #acac:41 #acat:61 #aced:-29 #acia:-43 #aded:-39 #adel:92
#ados:29 #adua:34 #affo:35 #afte:-47 #agua:-79 #ague:36 #ahor:226 #aigo:67 #airp:47 #ajes:-26 #alat:25 #alga:50
#alin:36 #alle:-40 #alon:-25 #alqu:-33 #alri:-47 #amen:-45 #amil:30 #amos:96 #ampe:36 #anan:-52 #anas:70 #ance:72
#ando:115 #anej:-96 #aniz:75 #anks:-48 #anos:-26 #anot:26 #anta:-51 #ante:72 #anti:65 #anto:-32 #apen:40 #appe:-37
#appy:-53 #apun:-25 #aqui:-26 #arca:-59 #arch:48 #arco:27 #arde:-40 #aren:33 #arge:-25 #aria:-28 #ario:41 #arke:57
#aron:-148 #arve:35 #arzo:110 #asad:-82 #ason:50 #asse:-28 #ater:30 #athe:47 #atio:77 #augu:25 #auto:-44 #aver:34
#avia:29 #avin:122 #avis:176 #avor:-39 #away:-63 #aybe:104 #ayda:55 #baby:32 #back:-35 #ball:28 #band:41 #bank:-32
#baro:-30 #bett:32 #betw:34 #biar:-26 #bien:42 #bier:-29 #blam:51 #blem:-25 #blen:34 #boda:26 #body:-33 #bols:-50
#bonu:41 #boss:46 #bout:51 #brar:-53 #bscr:-26 #budg:54 #buen:32 #busc:64 #busy:121 #cabe:63 #caci:33 #call:-38
#came:-39 #canc:53 #cant:124 #care:-34 #cati:50 #cele:44 #cena:36 #chan:-45 #char:-31 #chec:212 #ched:26 #choo:55
#cias:-41 #cion:28 #cker:-25 #clas:-27 #cole:-32 #come:32 #comm:42 #como:-52 #conf:70 #cort:58 #cost:-25 #coun:-40
#ctob:32 #cual:-40 #cuar:38 #cuen:-35 #cuer:44 #cupa:59 #dame:29 #days:95 #ddle:64 #deal:29 #deja:38 #deje:250
#dela:96 #deme:66 #depl:25 #desp:34 #dget:54 #dias:52 #dier:-31 #digo:197 #dimo:-72 #dine:115 #dios:37 #dire:103
#dont:53 #drop:-42 #dule:29 #each:35 #eali:32 #earl:-27 #earn:25 #easo:50 #eath:59 #ebod:-27 #ecar:51 #ecib:-27
#ecio:-49 #ecks:37 #ecue:42 #edal:-28 #eded:-28 #edes:-55 #edul:29 #eede:-28 #eeks:31 #eels:-28 #eemb:-49 #egan:-44
#egre:41 #egue:74 #egun:56 #ejam:71 #ejan:-108 #ejar:-46 #ejel:-31 #ejem:148 #ejen:-39 #ejor:46 #elan:105 #eliz:-49
#elva:57 #elvo:30 #embe:44 #embo:-49 #embr:35 #emin:27 #emos:49 #empo:93 #empr:-26 #enas:39 #endi:-123 #ends:30
#enen:-62 #ener:-46 #enev:-84 #enga:-39 #engi:-45 #engo:102 #enme:56 #enou:-29 #ensa:159 #ento:161 #entr:-36
#epla:-30 #eplo:25 #eran:44 #erar:-45 #erco:-41 #eren:-30 #eres:-42 #eria:72 #ermi:70 #erne:-32 #eron:-88 #erse:59
#esda:-33 #eses:73 #espe:-72 #esta:-53 #este:26 #esto:33 #etim:-67 #ette:31 #etwe:34 #ever:-185 #eves:-40 #evis:62
#exts:-66 #falt:28 #fami:30 #favo:-39 #feli:-51 #feri:80 #ffic:-37 #ffor:31 #fice:-35 #fies:25 #fina:60 #firm:85
#firs:81 #fixe:-31 #ford:35 #fren:-72 #frid:-51 #frio:39 #fter:-47 #fund:-25 #gast:28 #gery:51 #gets:31 #ghty:-37
#gimm:35 #gine:-45 #give:85 #givi:-27 #goin:-30 #grac:-42 #grea:-27 #gres:42 #guan:-66 #guen:51 #guno:39 #gunt:71
#habl:146 #hace:-81 #hank:-44 #happ:-71 #harg:-25 #harv:35 #have:53 #head:-26 #heca:55 #heck:64 #heco:92 #hedu:29
#hene:-84 #here:-49 #hese:44 #hici:-34 #hink:34 #hits:25 #hold:76 #hone:-47 #hool:67 #hora:167 #hori:36 #hose:-48
#hosp:43 #houg:44 #hubb:81 #hurs:-56 #husb:25 #ibir:-33 #ices:-51 #icey:-32 #icie:-33 #iday:-41 #iddl:67 #iemb:27
#iemp:26 #iene:-102 #ierc:-33 #iero:-98 #ight:165 #iles:27 #imav:34 #imme:35 #imos:-88 #inal:59 #ince:25 #inco:30
#inda:59 #iner:110 #ings:45 #ingu:35 #insu:43 #inte:-70 #ione:42 #irmo:89 #irpo:47 #irst:81 #isar:-32 #isen:37
#isit:38 #ital:28 #ivin:-47 #ixed:-31 #jale:-52 #jame:66 #jand:-97 #jelo:-31 #jeme:146 #juev:-43 #june:108 #junt:172
#just:51 #kick:25 #kind:74 #king:-34 #know:68 #labo:43 #lace:-38 #lama:-29 #lame:-32 #lamo:42 #lant:95 #last:-136
#late:26 #leep:32 #legu:78 #lend:31 #lenm:35 #lent:-27 #lets:56 #levo:53 #ligh:-64 #ling:47 #list:-25 #live:-28
#llam:-67 #lled:-28 #lleg:67 #ller:-27 #llev:48 #lock:-30 #look:107 #lost:26 #lqui:-33 #lrig:-47 #ltan:32 #ltim:-47
#lueg:93 #luga:-45 #lune:-68 #make:-54 #mana:-41 #mane:-100 #mart:-32 #marz:110 #mati:-34 #mave:34 #mayb:104 #mayo:33
#mbia:-37 #mbio:29 #mbol:-49 #mbre:27 #mebo:-27 #mejo:46 #menm:-37 #mens:-36 #ment:224 #mero:35 #mese:73 #meti:-79
#midd:67 #mier:-35 #mily:31 #mine:54 #mmer:52 #mmit:42 #mome:246 #mond:-64 #mone:35 #more:-48 #morr:38 #movi:63
#mped:36 #mpor:50 #mpre:-43 #much:51 #myse:-26 #nals:40 #nana:-52 #ncel:49 #ncen:35 #nces:-43 #nche:-28 #ndam:29
#ndar:26 #nday:-33 #ndim:-71 #near:73 #need:84 #neja:-96 #nero:66 #neve:-102 #next:38 #nfir:87 #ngan:-86 #ngin:-46
#ngun:35 #nigh:52 #noch:31 #noug:-29 #novi:32 #nsaj:-35 #nsan:51 #nsar:204 #nsur:44 #ntan:31 #ntar:92 #nten:67
#nter:-78 #nths:28 #ntil:43 #ntit:75 #ntra:41 #ntre:-70 #nudg:42 #nuev:28 #numb:-38 #nunc:-39 #obar:-34 #ober:30
#oble:-27 #obra:-59 #obre:30 #oche:28 #ocke:-28 #octo:41 #ocup:41 #oday:84 #offi:-35 #oing:-39 #oint:-27 #ojal:25
#okin:-28 #oles:-40 #olso:-49 #omeb:-27 #omen:212 #omes:76 #omet:-90 #ommi:42 #omor:40 #once:118 #onda:-67 #ondo:-52
#oney:35 #onfi:81 #onig:82 #onto:-48 #onus:41 #ooki:-28 #open:-51 #oper:61 #orad:51 #orar:50 #orit:32 #orro:41
#orry:-66 #orth:-41 #orto:38 #ospi:43 #otal:-30 #oton:28 #ough:29 #ould:-52 #ount:-48 #over:38 #ovie:36 #ovin:68
#oxim:-48 #paci:-29 #pagu:36 #paid:53 #para:116 #park:45 #pasa:-36 #pase:86 #pass:-137 #payd:55 #peda:-28 #pena:28
#pens:161 #pera:33 #phon:-52 #pita:28 #plac:-33 #plat:31 #ploy:25 #poin:-26 #pond:-39 #pora:51 #port:44 #poso:26
#pped:-25 #prec:-27 #preg:71 #pren:-38 #pric:-95 #prim:48 #prin:-27 #pron:-48 #prox:-45 #pued:-71 #punt:-31 #qued:-34
#quie:-62 #quin:29 #quiz:42 #rada:60 #rade:-74 #radu:35 #raig:74 #ramo:32 #ranc:44 #rand:-36 #rano:28 #rari:50
#raro:-36 #rcol:-33 #rdad:26 #rdem:27 #reac:35 #reca:-27 #reci:-62 #recu:53 #reem:-49 #rega:-27 #regr:42 #regu:67
#remi:25 #rend:-39 #reno:-59 #rent:37 #repl:-41 #rese:38 #resp:-53 #ress:-25 #reta:27 #revi:62 #rgan:68 #rger:53
#rice:-87 #rida:-46 #righ:88 #rima:33 #ring:-67 #rita:27 #rite:32 #rked:54 #rmin:63 #rned:-25 #rnes:-27 #road:36
#roba:-32 #ront:-63 #roug:25 #roxi:-48 #rpor:45 #rque:-35 #rrow:37 #rsda:-49 #rtes:-29 #rtos:-26 #ruen:-26 #rves:35
#sado:-50 #saje:-35 #sale:-28 #salg:38 #save:57 #savi:130 #says:55 #sban:25 #sche:29 #scho:67 #sday:-82 #seas:118
#self:-35 #seme:39 #senm:39 #sept:31 #sera:84 #sick:-25 #sign:-40 #sigu:25 #skip:-40 #slee:32 #slow:39 #snow:29
#some:-83 #sorr:-63 #spac:-35 #sper:-63 #spon:-49 #ssed:-46 #stan:-65 #stas:28 #sted:-92 #ster:46 #stil:-58 #stoy:68
#subs:-26 #summ:52 #sura:44 #sure:-68 #surg:49 #swam:36 #tado:37 #take:-112 #talk:44 #tall:-34 #tand:36 #tant:28
#tard:-26 #tari:-25 #tede:-54 #tell:62 #temp:32 #tena:31 #teng:83 #tere:-40 #term:66 #text:-33 #than:-52 #that:-72
#then:179 #thes:44 #they:-42 #thin:54 #this:50 #thos:-41 #thou:60 #thur:-57 #tiem:50 #tien:-88 #tigh:108 #till:51
#tima:-47 #time:54 #tion:65 #tira:-25 #tito:84 #tobe:32 #toda:88 #tomo:35 #toni:82 #took:-50 #tota:-30 #town:51
#trad:-48 #trai:73 #treg:-42 #trip:-30 #true:-26 #tter:28 #tues:-38 #twee:34 #twic:-35 #ualq:-33 #uand:26 #uant:-95
#uare:42 #ubby:81 #ubsc:-26 #ucho:62 #udge:95 #ueda:-53 #uede:-60 #uego:92 #uelt:-32 #uelv:102 #uena:-28 #uent:-36
#uera:25 #uerd:44 #uest:-44 #ueve:-48 #ugar:-45 #ugus:25 #uier:-63 #uinc:39 #uiza:42 #ulti:-47 #umbe:-38 #umme:52
#unas:60 #unca:-39 #unes:-68 #unos:120 #unta:105 #unte:53 #unti:53 #unto:47 #upad:61 #uran:45 #urge:46 #ursd:-49
#usba:25 #usco:55 #uste:-88 #utom:-32 #vaca:102 #vemo:37 #vend:-104 #vera:72 #vers:60 #vest:35 #viem:32 #ving:157
#vise:52 #visi:36 #viso:148 #vuel:54 #wamp:36 #weat:51 #week:105 #ween:34 #went:-47 #were:50 #when:153 #wher:-29
#wice:-35 #wife:29 #will:102 #wint:-25 #work:-71 #wort:-42 #woul:-43 #writ:39 #xima:-53 #yday:55 #yeah:-39 #your:-93
#ysel:-26 %again_later:355 %again_later%away:166 %again_later%busy:123 %again_later%call_off:85 %again_later%car:100
%again_later%car_part:-60 %again_later%do_it:137 %again_later%elsewhere:31 %again_later%fails:34
%again_later%family:91 %again_later%leave_me:57 %again_later%lift:-74 %again_later%money:61 %again_later%noise:-51
%again_later%odometer:41 %again_later%on_way:-50 %again_later%opening:-41 %again_later%pay_day:183
%again_later%phone:-88 %again_later%place:-50 %again_later%question:-27 %again_later%refuse:171
%again_later%season:43 %again_later%shake:-54 %again_later%shift_it:28 %again_later%start_again:-27
%again_later%thanks:-99 %again_later%who:-35 %agree:-73 %agree%bring:-147 %agree%busy:-45 %agree%do_it:51
%agree%doubt:-49 %agree%family:45 %agree%gone_car:37 %agree%message:49 %agree%on_way:-46 %agree%question:-88
%agree%refuse:172 %agree%thanks:-26 %away:273 %away%bring:46 %away%call_off:105 %away%car:49 %away%car_part:-75
%away%doubt:36 %away%elsewhere:33 %away%how_long:-28 %away%leave_me:-65 %away%lift:-43 %away%noise:-28
%away%on_way:-38 %away%pay_day:32 %away%phone:65 %away%question:159 %away%refuse:-116 %away%season:43
%away%start_again:37 %bad:-26 %bad%bring:47 %bad%busy:50 %bad%meaning:-25 %bad%refuse:-33 %bring%busy:33
%bring%call_off:54 %bring%do_it:-32 %bring%doubt:69 %bring%elsewhere:-25 %bring%money:62 %bring%on_way:31
%bring%pay_day:50 %bring%phone:26 %bring%question:-82 %bring%refuse:49 %bring%season:69 %busy:193 %busy%fails:26
%busy%gone_car:99 %busy%how_long:86 %busy%lift:31 %busy%pay_day:48 %busy%phone:-38 %busy%question:27 %busy%refuse:-26
%busy%season:42 %busy%shift_it:-55 %busy%start_again:59 %busy%wrong_one:36 %call_off:30 %call_off%car:-60
%call_off%car_part:-46 %call_off%doubt:28 %call_off%elsewhere:-43 %call_off%family:-28 %call_off%how_long:30
%call_off%leave_me:-34 %call_off%lift:-90 %call_off%message:-75 %call_off%money:34 %call_off%odometer:-40
%call_off%phone:-61 %call_off%question:45 %call_off%refuse:40 %call_off%season:191 %call_off%shift_it:-59
%call_off%thanks:29 %car:-96 %car%car_part:-42 %car%family:26 %car%gone_car:-56 %car%money:-26 %car%odometer:33
%car%pay_day:-32 %car%place:62 %car_part:-147 %car_part%fails:-32 %car_part%leave_me:39 %car_part%money:51
%car_part%noise:-35 %car_part%on_way:-33 %car_part%pay_day:-31 %car_part%phone:-50 %car_part%question:-60
%car_part%refuse:66 %car_part%season:60 %car_part%shake:-36 %car_part%start_again:-33 %do_it:-118 %do_it%doubt:47
%do_it%elsewhere:-44 %do_it%gone_car:-31 %do_it%message:53 %do_it%pay_day:-83 %do_it%question:33 %do_it%refuse:-35
%do_it%season:-38 %do_it%wrong_one:-55 %doubt:130 %doubt%elsewhere:-52 %doubt%family:58 %doubt%how_long:-26
%doubt%lift:26 %doubt%message:32 %doubt%money:-59 %doubt%odometer:91 %doubt%on_way:64 %doubt%pay_day:25
%doubt%refuse:76 %doubt%season:107 %doubt%shift_it:-44 %doubt%staff:27 %doubt%wrong_one:-89 %elsewhere:-65
%elsewhere%gone_car:-27 %elsewhere%lift:25 %elsewhere%message:-31 %elsewhere%odometer:64 %elsewhere%phone:-28
%elsewhere%refuse:-31 %elsewhere%season:33 %elsewhere%staff:-37 %elsewhere%wrong_one:-40 %fails:-80 %fails%refuse:-27
%family%money:28 %family%question:28 %family%refuse:-49 %family%start_again:77 %family%wrong_one:61 %gone_car:-145
%gone_car%how_long:68 %gone_car%money:28 %gone_car%pay_day:-42 %gone_car%question:39 %gone_car%refuse:52
%gone_car%shift_it:-46 %how_long:38 %how_long%lift:30 %how_long%pay_day:44 %how_long%question:-33 %how_long%refuse:60
%how_long%shift_it:-57 %leak:-44 %leave_me:-34 %leave_me%message:-47 %leave_me%money:46 %leave_me%odometer:78
%leave_me%opening:47 %leave_me%pay_day:-43 %leave_me%place:50 %leave_me%question:34 %lift:-95 %lift%pay_day:-88
%lift%season:-126 %lift%shift_it:30 %lift%wrong_one:42 %machine:-47 %meaning%pay_day:50 %message:-82
%message%on_way:45 %message%pay_day:-35 %message%question:39 %message%refuse:-43 %message%start_again:-90
%message%thanks:-36 %message%wrong_one:-61 %money%odometer:-48 %money%pay_day:49 %money%place:40 %money%season:90
%money%shift_it:-43 %money%start_again:-39 %noise:-101 %noise%question:-55 %noise%refuse:-27 %odometer%opening:51
%odometer%pay_day:-30 %odometer%phone:-46 %odometer%question:75 %odometer%shift_it:99 %odometer%staff:41 %on_way:-85
%on_way%pay_day:41 %on_way%place:-31 %on_way%question:-52 %on_way%season:48 %on_way%start_again:29 %opening:-37
%opening%place:-26 %opening%question:-51 %pay_day:243 %pay_day%question:203 %pay_day%refuse:118 %pay_day%season:-92
%pay_day%shift_it:53 %pay_day%start_again:31 %pay_day%wrong_one:79 %phone:-184 %phone%refuse:-29 %phone%season:122
%phone%shift_it:-39 %phone%staff:-41 %phone%wrong_one:55 %place:-27 %place%question:-27 %place%refuse:64
%place%season:29 %question:-40 %question%season:182 %question%shake:-58 %question%shift_it:-26
%question%smoke_smell:-28 %question%who:-53 %question%wrong_one:32 %refuse:-143 %refuse%season:199 %refuse%staff:-51
%refuse%start_again:-76 %refuse%thanks:-59 %season:303 %season%shift_it:127 %season%start_again:66 %season%thanks:26
%season%wrong_one:99 %shake:-86 %shift_it%start_again:-27 %shift_it%wrong_one:-42 %smoke_smell:-88 %staff:-43
%start_again:-75 %start_again%wrong_one:-25 %thanks:-55 %who:-87 @?:-229 @after_visit:-165 @car:-50 @confirm:-288
@confirm_stop:-107 @later:360 @nothing:-241 @odometer:33 @offers:-121 @reading:-145 @time:-141 @times:-118
@walk_in:-116 ^_about:-35 ^_after:150 ^_aguanta:-101 ^_ahora:117 ^_ahorita:29 ^_al:108 ^_ando:111 ^_any:-35
^_apenas:38 ^_asi:-37 ^_ask:80 ^_at:104 ^_call:-58 ^_can:-96 ^_cant:102 ^_check:27 ^_como:-35 ^_count:-51
^_cuando:126 ^_cuanto:-60 ^_de:31 ^_dejame:48 ^_deje:184 ^_dejeme:145 ^_deme:25 ^_despues:49 ^_do:-85 ^_dont:62
^_el:-71 ^_en:103 ^_end:-39 ^_entre:-26 ^_es:-29 ^_eso:-32 ^_estoy:95 ^_feliz:-39 ^_first:-54 ^_for:-27 ^_get:-38
^_gimme:35 ^_give:51 ^_go:-44 ^_got:121 ^_gracias:-41 ^_hablenme:36 ^_hace:-32 ^_had:-29 ^_hang:25 ^_hmm:27 ^_hold:63
^_how:-87 ^_i:-59 ^_ill:94 ^_is:-56 ^_it:-53 ^_just:64 ^_la:-123 ^_le:-61 ^_let:175 ^_llamenme:-27 ^_lo:119
^_luego:53 ^_mas:204 ^_maybe:74 ^_me:-148 ^_my:-115 ^_need:140 ^_not:197 ^_ok:-58 ^_on:49 ^_once:68 ^_one:-25
^_opt:-72 ^_otro:73 ^_please:-46 ^_puedo:-108 ^_que:-78 ^_se:-71 ^_si:-102 ^_sign:-30 ^_soon:31 ^_sorry:-48
^_still:-25 ^_sure:-175 ^_swamped:36 ^_tengo:88 ^_text:59 ^_the:-126 ^_this:-39 ^_too:59 ^_traded:-31 ^_try:87
^_va:46 ^_wait:34 ^_waiting:53 ^_were:54 ^_what:-87 ^_when:164 ^_whenever:-43 ^_why:-29 ^_will:27 ^_y:-33 ^_yeah:-34
^_yes:-67 ^_yo:147 ^_you:-109 a__is:-36 a__me:30 a__mil:92 a__of:-44 a__or:40 a__thing:34 a__time:69 a__weeks:80
a_bit:67 a_call:-26 a_few:88 a_good:73 a_los:65 a_mi:-66 a_month:32 a_que:46 a_week:-25 a_while:32 abiertos:-25
about:49 about_it:72 acabe:60 acabe_la:41 add:-33 adelante:48 adelante_$:28 afford:35 afford_it:37 after:-42
after_$:-87 after__day:35 after__th:-29 again_$:-118 again_in:74 aguanta:-102 ahi:28 ahora:191 ahora_$:39
ahora_no:152 ahorita:28 ahorita_no:69 airport:47 airport_$:50 al:25 al_rato:63 al_trabajo:-36 all:-73 all_$:-48
an:-34 and:-100 and_not:-28 anda:-30 andamos:25 ando:178 ando__de:28 ando_bien:83 ando_en:27 ando_fuera:51 ano:39
another:27 any:-61 apenas:40 are:37 are__the:56 are_in:68 are_you:-28 as_well:-25 asi:-94 asi_$:-38 ask:422
ask__again:58 ask__in:48 ask__when:25 ask_me:252 ask_my:47 at:180 at_$:35 at__calendar:30 at__moment:64 at__time:28
at_k:152 at_the:89 at_this:27 august:25 avisar:-30 avisenme:41 aviso:121 aviso_$:109 away:-63 away_$:-41 baby:31
back:-34 back_$:-74 back__the:-33 back__you:82 back_from:40 back_out:-25 back_to:77 bank:-32 be:-74 better:32
better_$:37 between:34 bien:34 bien_$:-38 bit:66 boda:26 bonus:41 boss:46 boss_$:36 budget:54 buen:50 bug:30
bug_me:30 busco:55 busco_$:53 busy:121 by_$:-27 calendar:31 call:-38 call_$:-25 call_me:-67 cambio:29 came:-36
can:-99 can__get:-36 can__me:-29 can__tell:32 can__wait:-67 can_i:-25 can_it:-72 cancele:45 cant:120 cant__in:-27
cant__it:31 cant__the:26 cant_afford:35 cant_come:-28 care:-31 care_of:-30 chance:33 chances:-52 chances_$:-52
checar:53 check:67 check__me:47 check_engine:-39 check_with:66 checks:37 checks_$:38 checo:92 cobraron:-34 cobre:40
comes:77 comes_$:29 commit:42 como:-51 con:45 con_mi:91 confirmo:89 confirmo_$:83 corto:39 cost:-25 count:-53
count__in:-42 count_me:-53 cualquier:-25 cuando:28 cuando__a:32 cuando__de:46 cuando__la:73 cuando__vuelta:-25
cuando_doy:-25 cuando_freno:-36 cuando_llegue:39 cuando_lo:-76 cuando_me:53 cuando_regrese:36 cuando_salga:26
cuando_tenga:49 cuando_termine:51 cuando_vuelva:34 cuanto:-25 cuanto_me:-54 da:-28 day_after:-33 days:111 days_$:99
de:76 de__no:61 de_dinero:52 de_la:26 de_las:-52 de_mes:-27 de_vacaciones:32 deja:32 dejame:66 deje:171 dejelo:-31
dejeme:146 del:-42 deme:39 despues:35 despues_$:97 despues__las:-58 despues_de:-40 despues_del:-65 dia:32 dia_$:-29
dias:52 did:-29 digo:201 digo_$:160 dinero:116 dinero_$:116 dios:38 dios_quiere:25 do:-71 do__need:-32 do_i:-49
do_it:61 do_not:-30 do_you:-27 dont:53 dont__it:48 dont__me:-31 dont_have:52 dont_know:64 dos:-33 down__road:27
down_the:29 doy:-28 doy_vuelta:-25 drive__a:33 drive_for:34 drop:-38 el:33 el__despues:-58 el__mes:69 el__pasado:-51
el_ano:28 el_aviso:-30 el_carro:27 el_dinero:25 el_jueves:-26 el_lunes:-56 el_mes:-26 el_momento:50 el_otro:72
el_verano:38 en:208 en__dias:64 en__me:-25 en__noche:30 en__por:36 en__que:25 en__si:27 en__y:28 en_enero:-33
en_la:-51 en_marzo:60 en_mil:63 en_que:-33 en_unos:80 end:-33 end__the:-42 end_of:-32 enero:-48 enero_$:-61
engine:-45 enough:-29 entre:-34 entre_semana:-28 entregan:-35 entregan_$:-34 es:-55 escribo_$:30 escuela_$:30 ese:-30
eso:-47 espacio:-34 espacio_$:-33 esperar:-60 espero:-34 esposo:26 esta_semana:34 estan:-52 estan_abiertos:-25
este_mes:41 estoy:60 estoy_bien:-39 estoy_de:56 estoy_en:30 estoy_manejando:-75 ever:-71 ever_$:-58 ex:-58
ex_wife:-30 faltan:32 family:31 favor:-40 feel:28 feel_like:33 feliz:-49 feliz_navidad:-27 feria:80 few:97
few_weeks:41 fiestas:25 fin:-41 fin_de:-37 finals:40 first:81 first_$:114 fixed:-31 for:63 for_a:35 for_it:140
for_me:-100 for_now:54 for_sure:-33 freno:-37 friday:-48 frio:39 frio_$:39 fuera:26 fuera_$:26 get:66 get__on:49
get__to:100 get_a:-55 get_back:116 get_it:-29 get_me:-43 get_my:33 get_paid:77 get_the:-38 get_through:27 gets:31
gimme:35 gimme_a:37 give:84 give__a:62 give_me:70 go:-92 go_away:-34 going:-30 going_on:45 going_to:-48 got:104
got__wait:27 got_a:-26 got_it:-32 got_to:178 gracias:-41 gracias__el:-29 gracias_por:-51 hablamos:44 hablamos_$:36
hablenme:35 hablo:103 hablo_$:86 hace:-80 hace_un:-34 had_to:-28 happy:-53 harvest:35 has:-67 has_it:-27
hasta__hora:-36 hasta__me:34 hasta_que:97 have:41 have_time:94 hit:86 hit__up:70 hit_k:27 hit_me:70 hits:25 hmm:27
hold:68 hold_off:50 hold_that:34 hora:-68 horario:46 horario_$:27 horas_$:-27 hospital:28 hospital_$:34 how:-57
how_much:-32 hubby:78 husband:25 i:-51 i__a:-33 i__it:-30 i__like:33 i__out:-53 i__paid:77 i__the:-25 i__to:26
i__you:32 i_can:32 i_cant:-32 i_feel:30 i_get:50 i_need:80 i_think:-51 i_want:-29 i_will:29 if:-26 ill:59
ill__back:31 ill__my:-53 ill__out:26 ill__you:116 ill_call:85 ill_do:60 ill_get:27 ill_let:41 ill_pass:-94
ill_take:-60 im:119 im__of:60 im__the:34 im_back:30 im_down:-45 im_free:25 im_out:66 im_still:-37 in:139 in_$:-136
in__bit:65 in__middle:70 in__spring:28 in__weeks:-31 in_a:77 in_another:49 in_june:96 in_march:26 in_may:32 in_the:35
in_two:-56 insurance:44 is:94 is__at:52 is__for:29 is__the:-33 is_on:-37 is_over:37 is_this:-27 is_tight:98 it:-116
it_$:134 it__after:-25 it__i:64 it__last:-31 it__now:37 it__to:-28 it_at:39 it_back:-45 it_be:-26 it_for:48 it_in:-81
it_is:28 it_now:-70 it_to:-35 it_wait:-65 it_when:55 jale:-52 jale_$:-50 job:49 job_so:35 jueves:-40 june:108
june_$:81 juntar:61 junto:44 just:52 just__my:27 just_had:56 k:113 k_$:128 k_miles:-28 kinda:63 know:77 know_$:51
know__is:53 know_it:56 la:65 la__de:28 la__en:-47 la__quincena:27 la__semana:-32 la__vez:-73 la_boda:26 la_noche:35
la_proxima:-53 la_semana:-31 la_tarde:-29 la_temporada:51 la_ultima:-37 labor:43 labor_day:42 las_$:-32
las__millas:34 las_fiestas:26 las_horas:34 las_mil:57 last:-135 last_month:-73 later_$:82 later_one:-41
later_time:-37 le:276 le__a:-32 le_aviso:63 le_digo:85 le_faltan:31 le_hablo:75 les:306 les_aviso:62 les_digo:46
let:203 let__look:52 let__see:54 let_me:161 let_you:69 lets:56 lets__it:-30 lets_out:43 light:-36 like_$:25
like_a:-26 live:-27 llamenme:-37 llegue:83 llegue__las:26 llegue_a:46 llevo:53 llevo_$:43 lo__a:46 lo__de:-32
lo__el:-32 lo__en:-43 lo__pronto:-34 lo_entregan:-35 lo_llevo:55 lo_mas:-36 lo_robaron:-25 lo_tienen:-27 lo_trae:25
lo_vendi:-35 lo_voy:68 look:123 look__my:29 looks_like:25 los:59 los_$:32 los_mil:59 lost:26 lost_my:45 luego:93
luego__digo:29 luego_les:45 lugar:-45 lugar_$:-39 lunes:-68 make:-50 make_it:-37 manana:-51 manejando:-98 marca:-47
march:57 march_$:25 marco:28 martes:-31 marzo:110 marzo_$:40 mas:68 mas_$:-96 mas__el:36 mas_adelante:120 mas_para:50
mas_pronto:-41 mas_tarde:28 may:43 maybe:104 maybe_in:43 mayo:30 me:156 me_$:-174 me__al:-58 me__at:26 me__el:67
me__im:33 me__in:49 me__june:66 me__las:28 me__my:47 me__on:32 me__this:-26 me__time:25 me__to:-46 me__week:84
me__what:37 me__when:-31 me__you:-30 me_after:33 me_again:74 me_back:-60 me_cobraron:-34 me_in:90 me_llegue:27
me_lo:-44 me_look:52 me_marca:-56 me_next:87 me_now:-32 me_off:-31 me_out:-32 me_paguen:40 me_see:54 me_some:25
me_then:98 me_tomorrow:39 me_up:58 me_van:-33 me_when:35 mejor:40 mensajes:-26 mes:-119 mes_$:-70 mes_pasado:-46
meses:54 meses_$:44 mi__y:39 mi_esposo:26 middle:67 middle_of:68 miercoles:-32 mil:204 mil_$:33 mil_millas:63
millas_$:-27 moment:64 momento:183 momento_no:78 monday:-32 mondays:-32 money:27 money_$:-47 money__tight:95
money_is:101 month__so:43 month_is:-37 month_or:40 months:28 more:-35 moving:68 much_$:-30 mucho:62 muy:-45 my:79
my__back:-44 my__first:43 my__is:35 my__refund:44 my__says:29 my__so:34 my_boss:56 my_car:-52 my_chances:-52
my_ex:-27 my_job:47 my_schedule:77 my_tax:57 my_wife:39 myself:-26 nada_$:-37 near:75 near__car:64 near_the:63
need:126 need_to:154 needed:-28 new:58 new_year:25 next:38 ni:-38 ninguno:40 no_$:-65 no__ahora:70 no__el:31
no__tiempo:52 no__yet:99 no_es:44 no_gracias:57 no_me:-73 no_need:-32 no_not:53 no_por:116 no_puedo:115 no_se:54
no_tengo:83 no_traigo:76 noche:36 not:187 not_$:-37 not__me:-69 not__month:25 not__now:76 not__this:63 not__to:-40
not__yet:88 not_a:40 not_ever:-57 not_for:-46 not_going:-49 not_happy:-27 not_in:-26 not_me:-70 not_my:-35
not_now:112 not_right:125 not_sure:145 not_till:30 not_today:97 not_worth:-41 not_yet:164 noviembre:32 now:208
now_$:85 now__me:25 nudge:42 nuevo:30 number:-36 nunca:-39 october:32 of:-88 of__month:-40 of_the:-55 of_town:66
office:-35 oh:-25 ok:-64 on:74 on__now:31 on__refund:-58 on_it:53 on_my:46 once:108 once_the:39 one:-91 one_$:-44
only_at:33 open:-31 opt:-81 opt_out:-37 or_so:53 otono:29 otono_$:29 otra:-28 otra_semana:29 otra_vez:-75 otro_$:-28
otro_dia:66 out:-176 out_$:-109 out__town:68 paguen:40 paid:53 paid_$:25 para:107 para__lo:-26 para_cuando:-43
para_el:92 para_nada:-29 para_que:-43 parked:54 pasado:-57 pasado_$:-36 pasando:25 pase:85 pase_la:25 pass:-110
pass_$:-83 payday:49 pedal:-28 pero:43 pero__que:25 phone:-45 please_$:40 please__me:-34 por:68 por__momento:53
por__no:36 por_ahora:146 por_favor:-34 por_que:-50 por_una:31 preguntenme:26 prices:-54 pricey:-32 primavera:34
primero:40 pronto:-48 proxima:-53 proxima_semana:-54 puede:-28 puedo_$:57 puedo_esperar:-85 pues:-27 que__el:65
que__la:61 que__paguen:26 que_cobre:27 que_hora:-37 que_le:-29 que_no:-62 que_pase:75 quincena:36 quincena_$:27
quiza:28 reach:39 reembolso:-49 regrese:35 remind:44 remind__in:33 remind_me:45 replaced:-29 respondo:-38 revisit:40
right:143 right_$:-29 right_now:168 ring:-27 road_$:29 robaron:-29 sabado:-33 sale:-27 salga:50 save:60 saving:128
say:-44 say_no:-43 says:55 says_$:51 schedule:28 schedule_$:-46 school:61 school__out:53 school_lets:52
se__cuando:-26 se__la:45 season:50 second_$:33 see:135 see__my:104 semana:-70 semana_$:-39 semanas:78 semanas_$:58
sera:85 sera_$:85 si__quiere:25 si_dios:26 sick:-25 sign:-38 sign_me:-34 skip:-40 skip_it:-37 slow:40 slow_down:46
so_$:26 so__me:29 some:36 somebody:-27 sometime:-61 son:-30 sorry:-63 sorry_i:-36 spring_$:-41 still:-57
still__on:-58 still_waiting:-59 stop_$:-26 stop_by:36 su:-29 summer:52 sunday:31 sunday_$:26 sure:-65 sure__me:-42
surgery:51 swamped:36 take:-102 take__chances:-52 take_my:-53 tal:27 tal_vez:28 talk:46 talk__my:60 talk_to:40
taller:-34 tan_pronto:-25 tantito:32 tarde:-31 tarde_$:-43 tax:81 tax_$:-32 tax_refund:51 te:91 te__luego:-46
te_digo:64 te_escribo:-37 tell:63 tell_you:70 temporada:51 temporada_de:45 tenga:49 tengan:-67 tengo:102
tengo_tiempo:52 termine:62 text:58 text_$:28 text_me:36 texts:-66 texts_again:-50 th_$:49 thanks:-27 that:-72
that_$:-39 the:57 the__again:-41 the__are:59 the__ask:32 the__ill:52 the__is:32 the__of:87 the__one:-27 the__time:-35
the_airport:47 the_baby:26 the_bank:-28 the_car:71 the_fall:36 the_holidays:25 the_later:-54 the_middle:69
the_moment:64 the_month:-42 the_new:35 the_oil:25 the_road:38 the_schedule:-28 the_spring:26 the_texts:-44 the_th:26
the_week:-28 then:179 then_$:130 there:-31 these:44 these_days:54 they:-37 thing_$:-48 things:54 think:26
think__it:110 think_about:67 this:50 this__i:25 this_is:-34 this_month:54 this_week:94 those:-41 though_$:28
through_the:25 thursday:-48 thursday_$:-28 tiempo:41 tiene:-34 tiene_millas:-44 tienen:-49 tienen_$:-36 tight:108
tight_$:63 til:81 til_the:45 till:118 time:125 time_$:61 time__week:56 to:115 to__all:-29 to__for:69 to__it:-30
to__me:-38 to__on:35 to__the:61 to__to:31 to__up:54 to__what:51 to__wife:56 to_ask:74 to_be:-38 to_check:33 to_my:34
to_see:72 to_talk:48 to_the:-84 to_wait:81 to_you:50 todavia_no:66 today:84 today_$:75 tomorrow:40 tomorrow_$:59
tomorrow_after:-27 tonight:82 tonight_$:70 too__for:-49 too_much:28 took:-50 town:52 town_$:47 traded:-39
traded__in:-30 traded_it:-30 trae_mi:25 traigo:75 trip:-27 try:161 try__in:31 try_me:158 twice:-35 two:-86
two_weeks:-70 ultima:-41 ultima_vez:-35 un:-117 un__mas:-74 un_mes:-87 una:-32 unas:60 unas_semanas:36 unos:120
unos_meses:31 until:43 until_the:44 up:176 up_$:-26 up__it:81 up_for:73 up_in:45 ustedes:-54 va:41 va__mil:35
va_en:67 vacaciones:41 vacation:65 vacation_$:62 van:-35 vemos:37 vendi:-35 vendimos:-71 ver:50 ver__mi:73 ver_con:73
verano:42 verano_$:26 vez:-123 vez_$:-50 vez_me:-29 viernes:-27 voy_a:70 vuelta:-30 vuelta_$:-28 vuelva:37 wait:25
wait__my:33 wait_til:-29 wait_till:26 was:-59 we:41 we_are:57 weather:51 week:75 week_$:63 weeks:32 weeks_$:37
went:-46 were:50 what__i:26 what__it:29 what_my:90 when:240 when__i:-37 when__is:26 when__it:-27 when__slow:47
when_do:-25 when_i:120 when_im:70 when_school:49 when_the:127 when_would:-45 when_you:-39 whenever:-83 where:-25
who:-48 who_you:-25 why:-55 why_not:-28 wife_$:34 wife__it:-31 will:102 will__you:59 will_get:50 will_it:-26
winter:-25 with_a:29 with_me:48 with_tax:-44 with_the:-34 work:-62 work_$:-76 worth:-42 would:-37 would__get:-32
would_i:-32 write:39 y:70 y_no:-38 y_te:47 ya__me:30 ya__pase:56 ya_les:107 ya_lo:-56 ya_no:-42 ya_que:109 yeah:-39
yes:-79 yet:324 yet_$:199 yet__me:57 yo:191 yo__aviso:58 yo_le:101 yo_les:97 you:-115 you_$:68 you__a:-31 you__i:25
you__im:42 you__my:-51 you_all:-28 you_can:-36 you_get:-30 you_know:64 you_tomorrow:35 you_when:83 your:-89
"""
