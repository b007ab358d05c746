"""What speaks for and against `later`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "later"
BIAS = -127
WEIGHTS = """\
#abad:-22 #abie:-26 #abla:36 #ablo:96 #abor:44 #abou:40 #acab:66 #acac:41 #acat:59 #aced:-28 #acia:-40 #aded:-34
#adel:89 #ados:30 #adua:35 #affo:31 #afte:-41 #agai:28 #agar:22 #agua:-80 #ague:33 #ahor:193 #aigo:67 #aire:-25
#airp:48 #alat:25 #alga:51 #alin:36 #alle:-35 #ally:23 #alon:-26 #alqu:-31 #alri:-49 #alta:26 #amen:-42 #amil:30
#amos:94 #ampe:36 #anan:-53 #anas:71 #ance:69 #ando:102 #anej:-99 #aniz:76 #anks:-39 #anos:-26 #anot:30 #anta:-52
#ante:69 #anti:65 #anto:-26 #apen:40 #appe:-35 #appy:-51 #apun:-25 #aqui:-25 #arca:-59 #arch:48 #arco:25 #arde:-38
#aren:34 #arge:-25 #aria:-29 #ario:39 #arke:57 #arly:-22 #aron:-136 #arve:35 #arzo:111 #asad:-66 #ason:47 #asse:-26
#aste:22 #athe:51 #atio:76 #augu:26 #auto:-44 #aver:34 #avia:27 #avin:123 #avis:152 #avor:-37 #away:-61 #aybe:93
#ayda:54 #baby:31 #bado:-22 #bajo:-27 #ball:28 #band:37 #bank:-31 #banm:22 #baro:-30 #bett:33 #betw:35 #bien:38
#bier:-30 #blam:51 #blan:-22 #blem:-24 #blen:33 #boda:26 #body:-31 #bols:-51 #bonu:42 #boss:47 #bout:45 #brar:-51
#bscr:-25 #budg:55 #buen:32 #busc:64 #busy:116 #cabe:62 #caci:33 #call:-33 #came:-36 #canc:51 #cant:95 #care:-29
#cati:48 #cele:44 #cemb:22 #cena:35 #chan:-43 #char:-31 #chec:192 #choo:55 #cias:-38 #cion:30 #cker:-25 #ckin:-22
#clas:-28 #cloc:-22 #cole:-33 #come:29 #comm:43 #como:-54 #conf:71 #cort:58 #cost:-24 #coun:-38 #ctob:31 #cual:-39
#cuar:37 #cuel:23 #cuen:-35 #cuer:43 #cupa:58 #dame:29 #damo:23 #days:90 #ddle:65 #deal:31 #deja:36 #deje:242
#dela:94 #deme:66 #depl:24 #dget:55 #dias:54 #dier:-31 #digo:182 #dimo:-71 #dine:105 #dios:37 #dire:104 #dont:51
#drop:-41 #each:36 #eali:32 #earl:-26 #earn:25 #easo:47 #eath:60 #ebod:-27 #ecar:49 #ecem:22 #ecib:-26 #ecio:-48
#ecks:37 #ecue:41 #edal:-22 #edan:-24 #eded:-30 #edes:-56 #eede:-30 #eeks:23 #eels:-29 #eemb:-49 #egan:-45 #egre:36
#egue:76 #egun:53 #ejam:70 #ejan:-111 #ejar:-46 #ejel:-35 #ejem:145 #ejen:-40 #ejor:43 #elan:103 #eliz:-49 #elta:-22
#elva:58 #elvo:28 #eman:25 #embe:46 #embo:-49 #embr:34 #emin:29 #emos:49 #empo:90 #empr:-25 #enas:39 #endi:-116
#ends:29 #enen:-60 #ener:-48 #enev:-79 #enga:-41 #engi:-45 #engo:88 #enme:58 #enou:-29 #ensa:165 #ensi:-22 #ento:161
#entr:-41 #epla:-28 #eplo:24 #eran:42 #erar:-40 #erco:-41 #erem:23 #eren:-31 #eres:-31 #eria:72 #ermi:71 #erne:-30
#eron:-84 #erse:60 #esda:-31 #eses:74 #espe:-64 #esta:-56 #este:32 #eter:-22 #etim:-69 #ette:32 #etwe:35 #even:-24
#ever:-175 #eves:-39 #evis:63 #expe:-22 #exts:-58 #falt:30 #fami:30 #favo:-37 #feli:-51 #feri:78 #ffic:-38 #ffor:28
#fice:-36 #fies:24 #fina:59 #firm:87 #firs:63 #fixe:-30 #ford:31 #free:24 #fren:-59 #frid:-47 #frio:39 #fter:-41
#fund:-27 #gain:28 #gast:27 #gery:50 #gets:33 #ghte:-23 #ghts:-22 #ghty:-38 #gimm:34 #gine:-45 #give:83 #givi:-27
#goin:-31 #grac:-39 #grea:-26 #gres:37 #guan:-69 #guen:48 #guno:39 #gunt:70 #habl:137 #hace:-69 #hank:-33 #happ:-69
#harg:-25 #harv:35 #have:52 #head:-24 #heca:53 #heck:45 #heco:93 #heel:-24 #hene:-79 #here:-40 #hese:46 #hici:-24
#hift:-24 #hink:24 #hits:26 #hold:69 #home:22 #hone:-45 #hool:67 #hora:150 #hose:-49 #hosp:43 #houg:43 #hous:25
#hubb:79 #hurs:-51 #ibir:-32 #ices:-54 #icey:-33 #icie:-31 #iday:-43 #iddl:68 #iemb:25 #iemp:24 #iene:-99 #ierc:-33
#iero:-90 #ight:141 #igue:23 #iles:28 #imav:34 #imer:22 #imme:34 #imos:-77 #inal:58 #ince:24 #inco:29 #inda:60
#iner:100 #ings:46 #ingu:35 #insu:43 #inte:-60 #ione:42 #irmo:90 #irpo:48 #irst:63 #isar:-34 #isen:38 #isit:36
#ital:28 #ivin:-47 #ixed:-31 #jale:-55 #jame:66 #jand:-103 #jelo:-35 #jeme:142 #juev:-42 #june:106 #juni:22 #junt:172
#just:51 #kick:25 #kill:23 #kind:75 #king:-32 #know:63 #labo:44 #lace:-36 #lama:-27 #lame:-29 #lamo:41 #land:22
#lant:94 #last:-112 #leep:32 #legu:79 #lela:24 #lend:24 #lenm:35 #lent:-28 #lets:53 #levo:52 #ligh:-59 #ling:46
#list:-25 #live:-28 #llam:-61 #lled:-25 #lleg:63 #ller:-26 #llev:48 #lock:-31 #lone:-24 #look:101 #lost:27 #lqui:-31
#lrig:-49 #ltan:32 #ltim:-46 #lueg:80 #luga:-45 #lune:-69 #make:-54 #mana:-37 #mane:-103 #mart:-32 #marz:111
#mati:-35 #mave:34 #mayb:93 #mayo:30 #mbia:-29 #mbio:29 #mbol:-50 #mbre:26 #mebo:-27 #mejo:43 #menm:-35 #mens:-32
#ment:214 #mero:36 #mese:74 #meti:-81 #midd:68 #mier:-35 #mily:31 #mind:22 #mine:56 #mmer:49 #mmit:44 #mome:238
#mond:-65 #mone:31 #more:-45 #morr:38 #movi:65 #mped:36 #mpor:50 #mpre:-44 #much:50 #myse:-26 #nals:38 #nana:-53
#ncel:47 #ncen:34 #nces:-44 #nche:-29 #ndam:29 #ndar:22 #nday:-34 #ndim:-69 #near:75 #need:74 #neja:-98 #nero:54
#neve:-94 #next:31 #nfir:89 #ngan:-88 #nged:-23 #ngin:-46 #ngun:35 #nigh:53 #noch:30 #noug:-29 #novi:30 #nsaj:-31
#nsan:52 #nsar:205 #nsub:-22 #nsur:45 #ntan:30 #ntar:92 #nten:65 #nter:-69 #nths:28 #ntil:41 #ntit:75 #ntra:36
#ntre:-68 #nudg:42 #nuev:28 #numb:-36 #nume:-24 #nunc:-40 #obar:-34 #ober:28 #oble:-28 #obra:-57 #obre:27 #oche:27
#ocke:-28 #octo:41 #ocup:41 #oday:84 #offi:-36 #oing:-39 #oint:-27 #ojal:25 #okin:-27 #oles:-41 #olso:-49 #omeb:-27
#omen:203 #omes:78 #omet:-88 #ommi:44 #omor:40 #once:117 #onda:-68 #ondo:-52 #oney:31 #onfi:82 #onig:82 #only:22
#onto:-50 #onus:42 #ooki:-27 #ooks:23 #open:-51 #oper:61 #orad:51 #orar:47 #orro:40 #orry:-66 #orth:-41 #orto:38
#ospi:43 #otal:-27 #othe:28 #oton:28 #ough:23 #ould:-44 #ount:-46 #over:37 #ovie:34 #ovin:70 #oxim:-47 #paci:-30
#pagu:33 #paid:44 #para:106 #park:47 #pase:86 #pass:-126 #payd:54 #pect:-22 #peda:-22 #pena:28 #pens:162 #pera:36
#phon:-50 #pita:28 #plac:-31 #plat:30 #ploy:24 #poin:-25 #pond:-39 #pora:52 #port:44 #poso:26 #prec:-24 #preg:70
#pren:-37 #pric:-96 #prim:47 #prin:-29 #pron:-51 #prox:-43 #pued:-65 #pues:-37 #punt:-31 #qued:-32 #quie:-57 #quin:28
#quiz:41 #rada:61 #rade:-71 #radu:36 #raig:73 #rain:-22 #rame:23 #ramo:32 #ranc:44 #rand:-35 #rano:28 #rari:47
#raro:-35 #rcol:-33 #rdad:26 #rdem:27 #reac:36 #reca:-28 #reci:-60 #recu:52 #reem:-50 #rega:-27 #regr:37 #regu:67
#remi:28 #rend:-37 #reno:-47 #rent:38 #repl:-39 #rese:35 #resp:-55 #ress:-25 #reta:27 #revi:63 #rgan:69 #rger:52
#rice:-89 #rida:-42 #righ:58 #rima:33 #rime:22 #ring:-64 #rite:33 #rked:54 #rmin:64 #rned:-22 #rnes:-26 #road:34
#roba:-33 #ront:-65 #roxi:-47 #rpor:46 #rque:-35 #rren:-22 #rrow:37 #rsda:-45 #rtes:-28 #rtos:-27 #ruen:-26 #rves:35
#saba:-22 #sado:-34 #saje:-30 #sale:-26 #salg:38 #sand:23 #save:58 #savi:131 #says:55 #scho:67 #sday:-76 #seas:115
#self:-35 #seme:38 #senm:39 #sept:30 #sera:85 #shif:-24 #sick:-28 #sign:-40 #sigu:25 #skip:-41 #slee:32 #slow:39
#snow:27 #some:-82 #sorr:-63 #spac:-36 #sper:-56 #spit:22 #spon:-49 #ssed:-45 #stan:-66 #stas:27 #sted:-85 #ster:43
#stil:-57 #stoy:55 #subs:-25 #summ:49 #sund:23 #sura:45 #sure:-65 #surg:48 #swam:36 #tado:37 #take:-106 #talk:39
#tall:-32 #tand:36 #tant:27 #tard:-22 #tari:-25 #tede:-55 #tell:62 #temp:33 #tena:31 #teng:68 #tere:-29 #term:67
#text:-23 #than:-41 #that:-54 #then:175 #ther:34 #thes:46 #they:-42 #thin:51 #this:47 #thos:-42 #thou:61 #thur:-52
#tiem:47 #tien:-86 #tigh:109 #till:47 #tima:-46 #time:53 #tion:63 #tira:-23 #tito:84 #tobe:31 #toda:86 #tomo:35
#toni:82 #tono:22 #took:-42 #tota:-27 #town:48 #trad:-43 #trai:72 #treg:-41 #trip:-32 #true:-26 #tter:31 #tues:-36
#twee:34 #twic:-35 #ualq:-31 #uand:29 #uant:-91 #uare:42 #ubby:79 #ubre:22 #ubsc:-25 #ucho:62 #udge:96 #ueda:-51
#uede:-54 #uego:79 #uela:23 #uelt:-31 #uelv:101 #uena:-27 #uent:-35 #uera:24 #uerd:43 #uest:-46 #ueve:-47 #ugar:-45
#ugus:26 #uier:-59 #uinc:39 #uite:24 #uiza:41 #ulti:-46 #umbe:-37 #umer:-24 #umme:49 #unas:60 #unca:-39 #unes:-69
#unos:119 #unsu:-22 #unta:104 #unte:52 #unti:52 #unto:47 #upad:61 #uper:23 #uran:46 #urge:46 #ursd:-45 #usco:55
#uste:-89 #utom:-33 #vaca:100 #vemo:37 #vend:-102 #vera:71 #vers:61 #vest:35 #viem:31 #ving:161 #vise:52 #visi:35
#viso:127 #vuel:55 #wait:34 #wamp:36 #weat:52 #week:91 #ween:34 #went:-42 #were:50 #whee:-24 #when:125 #wher:-26
#wice:-35 #wife:23 #will:98 #wint:-26 #work:-73 #wort:-42 #woul:-37 #writ:39 #xima:-51 #yday:53 #yeah:-39 #your:-90
#ysel:-26 %again_later:312 %again_later%agree:-30 %again_later%away:146 %again_later%busy:114
%again_later%call_off:75 %again_later%car:98 %again_later%car_part:-46 %again_later%do_it:124
%again_later%elsewhere:47 %again_later%fails:37 %again_later%family:90 %again_later%leave_me:59 %again_later%lift:-55
%again_later%money:57 %again_later%noise:-40 %again_later%odometer:35 %again_later%on_way:-47
%again_later%opening:-40 %again_later%pay_day:159 %again_later%phone:-78 %again_later%place:-47
%again_later%refuse:158 %again_later%season:23 %again_later%shake:-48 %again_later%thanks:-99 %again_later%who:-30
%again_later%wrong_one:24 %agree:-68 %agree%away:-22 %agree%bring:-150 %agree%busy:-53 %agree%do_it:48
%agree%doubt:-49 %agree%family:44 %agree%gone_car:37 %agree%lift:24 %agree%message:51 %agree%on_way:-44
%agree%question:-86 %agree%refuse:165 %agree%thanks:-26 %away:261 %away%bring:42 %away%call_off:98 %away%car:52
%away%car_part:-67 %away%doubt:31 %away%elsewhere:28 %away%how_long:-30 %away%leave_me:-50 %away%lift:-44
%away%noise:-26 %away%on_way:-37 %away%pay_day:26 %away%phone:66 %away%question:151 %away%refuse:-111 %away%season:37
%away%start_again:32 %bad%bring:47 %bad%busy:49 %bad%meaning:-25 %bad%refuse:-33 %bring%call_off:53 %bring%do_it:-34
%bring%doubt:69 %bring%elsewhere:-23 %bring%gone_car:-25 %bring%money:62 %bring%on_way:31 %bring%pay_day:44
%bring%phone:26 %bring%question:-84 %bring%refuse:46 %bring%season:71 %bring%shift_it:27 %bring%start_again:22
%busy:150 %busy%fails:25 %busy%gone_car:99 %busy%how_long:87 %busy%lift:32 %busy%on_way:-22 %busy%pay_day:40
%busy%phone:-41 %busy%question:22 %busy%refuse:-39 %busy%season:39 %busy%shift_it:-61 %busy%start_again:57
%busy%wrong_one:36 %call_off%car:-60 %call_off%car_part:-58 %call_off%doubt:24 %call_off%elsewhere:-37
%call_off%family:-29 %call_off%how_long:30 %call_off%leak:-22 %call_off%leave_me:-34 %call_off%lift:-87
%call_off%message:-69 %call_off%odometer:-44 %call_off%phone:-55 %call_off%question:29 %call_off%refuse:38
%call_off%season:183 %call_off%shift_it:-60 %call_off%thanks:32 %car:-82 %car%car_part:-41 %car%family:26
%car%gone_car:-48 %car%lift:22 %car%money:-26 %car%odometer:33 %car%pay_day:-32 %car%place:64 %car%start_again:-23
%car_part:-127 %car_part%fails:-29 %car_part%family:23 %car_part%leave_me:39 %car_part%money:53 %car_part%noise:-28
%car_part%on_way:-31 %car_part%pay_day:-32 %car_part%phone:-49 %car_part%question:-50 %car_part%refuse:60
%car_part%season:57 %car_part%shake:-29 %car_part%start_again:-28 %do_it:-101 %do_it%doubt:48 %do_it%elsewhere:-40
%do_it%gone_car:-30 %do_it%message:39 %do_it%pay_day:-60 %do_it%question:31 %do_it%refuse:-36 %do_it%start_again:24
%do_it%wrong_one:-54 %doubt:109 %doubt%elsewhere:-49 %doubt%family:57 %doubt%how_long:-26 %doubt%lift:25
%doubt%message:33 %doubt%money:-63 %doubt%odometer:89 %doubt%on_way:65 %doubt%question:-25 %doubt%refuse:67
%doubt%season:99 %doubt%shift_it:-45 %doubt%staff:27 %doubt%wrong_one:-89 %elsewhere:-44 %elsewhere%gone_car:-25
%elsewhere%lift:25 %elsewhere%message:-27 %elsewhere%odometer:65 %elsewhere%phone:-28 %elsewhere%refuse:-26
%elsewhere%season:29 %elsewhere%staff:-36 %elsewhere%wrong_one:-30 %fails:-69 %fails%money:22 %fails%pay_day:23
%fails%refuse:-24 %family%money:29 %family%on_way:22 %family%question:27 %family%refuse:-48 %family%start_again:78
%family%wrong_one:57 %gone_car:-130 %gone_car%how_long:66 %gone_car%money:23 %gone_car%pay_day:-35
%gone_car%question:38 %gone_car%refuse:43 %gone_car%season:23 %gone_car%shift_it:-46 %how_long:63 %how_long%lift:42
%how_long%pay_day:47 %how_long%question:-26 %how_long%refuse:57 %how_long%shift_it:-55 %leak:-41
%leave_me%message:-45 %leave_me%money:44 %leave_me%odometer:78 %leave_me%opening:47 %leave_me%pay_day:-43
%leave_me%place:49 %leave_me%question:34 %lift:-73 %lift%pay_day:-90 %lift%season:-128 %lift%shift_it:30
%lift%wrong_one:42 %machine:-47 %meaning%pay_day:50 %message:-80 %message%on_way:43 %message%pay_day:-37
%message%question:39 %message%refuse:-36 %message%start_again:-78 %message%thanks:-35 %message%wrong_one:-58
%money:-23 %money%odometer:-49 %money%pay_day:38 %money%place:40 %money%season:87 %money%shift_it:-43
%money%start_again:-37 %noise:-80 %noise%question:-49 %odometer%opening:50 %odometer%pay_day:-32 %odometer%phone:-47
%odometer%question:72 %odometer%refuse:-24 %odometer%shift_it:98 %odometer%staff:40 %on_way:-78 %on_way%pay_day:36
%on_way%place:-35 %on_way%question:-52 %on_way%season:43 %on_way%start_again:31 %opening:-38 %opening%place:-26
%opening%question:-53 %pay_day:206 %pay_day%question:175 %pay_day%refuse:105 %pay_day%season:-90 %pay_day%shift_it:42
%pay_day%start_again:28 %pay_day%wrong_one:77 %phone:-173 %phone%refuse:-27 %phone%season:120 %phone%shift_it:-39
%phone%staff:-40 %phone%wrong_one:58 %place:-23 %place%question:-26 %place%refuse:61 %place%season:24 %question:-47
%question%season:169 %question%shake:-53 %question%shift_it:-32 %question%smoke_smell:-29 %question%who:-48
%question%wrong_one:33 %refuse:-111 %refuse%season:193 %refuse%shift_it:-25 %refuse%staff:-50 %refuse%start_again:-66
%refuse%thanks:-48 %refuse%who:-23 %season:285 %season%shift_it:119 %season%start_again:63 %season%thanks:25
%season%wrong_one:95 %shake:-80 %shift_it%start_again:-25 %shift_it%wrong_one:-33 %smoke_smell:-76 %staff:-35
%start_again:-38 %thanks:-43 %who:-77 @?:-209 @after_visit:-142 @car:-41 @confirm:-266 @confirm_stop:-95 @later:261
@nothing:-206 @odometer:39 @offers:-121 @reading:-136 @time:-135 @times:-119 @walk_in:-103 ^_about:-37 ^_after:147
^_aguanta:-105 ^_ahora:108 ^_al:102 ^_ando:110 ^_any:-31 ^_apenas:38 ^_asi:-40 ^_ask:75 ^_at:96 ^_call:-59 ^_can:-86
^_cant:73 ^_check:27 ^_como:-35 ^_count:-51 ^_cuando:121 ^_cuanto:-52 ^_de:31 ^_dejame:47 ^_deje:184 ^_dejeme:142
^_deme:25 ^_despues:41 ^_do:-83 ^_dont:59 ^_el:-62 ^_en:101 ^_end:-38 ^_entre:-26 ^_es:-27 ^_eso:-31 ^_espereme:23
^_estoy:91 ^_feliz:-40 ^_first:-57 ^_for:-26 ^_get:-39 ^_gimme:35 ^_give:52 ^_go:-45 ^_got:118 ^_gracias:-41
^_hablenme:36 ^_hace:-24 ^_had:-30 ^_hang:25 ^_happy:-23 ^_hmm:27 ^_hold:59 ^_how:-82 ^_i:-51 ^_ill:87 ^_is:-58
^_it:-53 ^_just:64 ^_la:-119 ^_le:-64 ^_let:147 ^_llamenme:-26 ^_lo:126 ^_luego:46 ^_mas:198 ^_maybe:66 ^_me:-140
^_mejor:-22 ^_might:-22 ^_my:-113 ^_need:136 ^_ninguno:23 ^_not:166 ^_oh:-24 ^_ok:-56 ^_on:49 ^_once:67 ^_one:-27
^_opt:-57 ^_otro:74 ^_please:-44 ^_por:-23 ^_puedo:-105 ^_que:-75 ^_ring:-22 ^_se:-67 ^_si:-98 ^_sign:-31 ^_soon:32
^_sorry:-49 ^_still:-25 ^_sure:-173 ^_swamped:36 ^_tengo:88 ^_text:60 ^_the:-121 ^_this:-40 ^_todo:22 ^_too:58
^_traded:-25 ^_try:87 ^_va:45 ^_wait:36 ^_waiting:53 ^_were:54 ^_what:-83 ^_when:150 ^_whenever:-38 ^_why:-22
^_will:25 ^_y:-33 ^_ya:32 ^_yeah:-34 ^_yes:-63 ^_yo:127 ^_you:-100 a__first:24 a__is:-37 a__me:31 a__mil:93
a__now:-24 a__of:-43 a__or:39 a__thing:34 a__time:69 a__weeks:79 a_bit:63 a_call:-26 a_cobrar:-22 a_few:89 a_good:73
a_los:65 a_mi:-67 a_month:27 a_que:47 a_week:-27 a_while:33 abiertos:-26 about:43 about_it:70 acabe:60 acabe_la:41
add:-34 adelante:44 adelante_$:25 afford:31 afford_it:34 after:-35 after_$:-81 after__day:36 after__th:-29
after_all:-23 after_the:22 again:31 again_$:-105 again_in:70 again_on:24 aguanta:-105 ahi:30 ahora:177 ahora_$:38
ahora_no:148 ahorita__puedo:23 ahorita_ando:23 ahorita_no:62 aire:-25 aire_$:-23 airport:48 airport_$:50 al_rato:55
al_trabajo:-38 all:-72 all_$:-50 an:-30 and:-93 and_not:-29 anda:-30 andamos:25 ando:171 ando__de:27 ando_bien:81
ando_en:25 ando_fuera:51 ano:40 ano_nuevo:23 another:31 any:-58 apenas:40 are:39 are__the:58 are_in:70 are_you:-27
as_well:-25 asi:-99 asi_$:-39 ask:409 ask__again:55 ask__in:46 ask__when:24 ask_me:242 ask_my:47 at:143 at_$:36
at__calendar:24 at__moment:54 at__time:29 at_k:140 at_the:78 at_this:28 august:26 avisar:-32 avisenme:41 aviso:98
aviso_$:88 away:-61 away_$:-40 baby:30 back_$:-63 back__school:24 back__the:-34 back__you:80 back_from:39
back_out:-27 back_to:75 bank:-30 be:-73 better:33 better_$:38 between:35 bien:30 bien_$:-40 bit:63 boda:26 bonus:42
boss:47 boss_$:36 budget:55 buen:50 bug:29 bug_me:29 bus:-24 busco:55 busco_$:52 busy:116 by_$:-25 calendar:25
call:-35 call_$:-25 call_me:-63 cambio:29 came:-34 can:-83 can__get:-33 can__me:-26 can__tell:32 can__wait:-64
can_it:-70 cancel_$:-25 cancele:46 cancele_y:23 cant:91 cant__in:-28 cant__it:26 cant_afford:31 cant_come:-29
care:-26 care_of:-25 carro_esta:23 chance:32 chances:-53 chances_$:-53 checar:51 check:48 check__me:48
check_engine:-40 check_with:63 checks:37 checks_$:39 checo:93 cobraron:-33 cobre:39 come:-26 comes:78 comes_$:30
commit:44 como:-53 con:39 con_mi:89 con_ustedes:-22 confirmo:90 confirmo_$:84 contact__again:-22 contact_me:-22
corto:40 cost:-24 count:-52 count__in:-41 count_me:-52 cualquier:-23 cuando:30 cuando__a:32 cuando__de:44
cuando__la:74 cuando__vuelta:-24 cuando_doy:-24 cuando_freno:-26 cuando_llegue:40 cuando_lo:-78 cuando_me:49
cuando_regrese:34 cuando_salga:26 cuando_tenga:49 cuando_termine:52 cuando_vuelva:34 cuanto__van:-22 cuanto_me:-51
cuanto_rato:-22 cuanto_se:23 da:-27 dan:23 day_$:26 day_after:-32 days:113 days_$:102 de:62 de__el:-23 de__no:61
de_dinero:53 de_eso:22 de_la:27 de_las:-58 de_mes:-28 de_vacaciones:33 december:22 december_$:22 deja:32 dejame:66
dejar:-24 deje:172 dejelo:-35 dejeme:142 del:-48 deme:39 despues_$:99 despues__las:-63 despues_de:-50 despues_del:-68
di:-25 dia:34 dia_$:-28 dias:54 diciembre_$:-22 did:-25 digo:187 digo_$:147 dinero:107 dinero_$:111 dios:37
dios_quiere:24 do:-70 do__need:-32 do_i:-48 do_it:55 do_not:-29 do_you:-24 dont:51 dont__it:48 dont__me:-31
dont_have:53 dont_know:65 dont_text:-23 dont_think:-26 dos:-34 down__road:26 down_the:29 doy:-26 doy_vuelta:-24
drive__a:34 drive_for:35 drop:-38 easter_$:22 el:35 el__despues:-62 el__mes:68 el__pasado:-33 el_aire:-22 el_ano:28
el_aviso:-31 el_carro:27 el_dinero:24 el_income:22 el_jueves:-26 el_lunes:-58 el_miercoles:-24 el_momento:50
el_otro:72 el_sabado:-23 el_verano:37 en:188 en__dias:66 en__me:-26 en__noche:29 en__por:36 en__que:25 en__si:26
en__y:28 en_el:-27 en_enero:-35 en_la:-53 en_marzo:62 en_mayo:22 en_mil:63 en_noviembre:22 en_paz:-23 en_que:-33
en_unos:81 end:-30 end__the:-41 end_of:-31 enero:-51 enero_$:-62 engine:-45 enough:-29 enough_$:-25 entre:-34
entre_semana:-28 entregan:-36 entregan_$:-36 es:-51 esa:-23 escribanme:22 escribo_$:30 escuela:23 escuela_$:30
ese:-28 eso:-49 eso_$:-24 espacio:-34 espacio_$:-34 esperar:-55 espereme:23 espero:-32 esposo:26 esposo_$:24
esta_semana:34 estan:-52 estan_abiertos:-25 este_mes:40 estoy:48 estoy_bien:-42 estoy_de:57 estoy_en:27
estoy_manejando:-77 ever:-71 ever_$:-59 ex:-60 ex__it:-24 ex_wife:-31 faltan:32 family:31 favor:-38 feel:28
feel_like:34 feels:-24 feliz:-49 feliz_navidad:-29 feria:78 few:97 few_weeks:40 fiestas:24 fin:-42 fin__mes:-24
fin_de:-37 finals:38 first:63 first_$:100 fixed:-30 for:63 for_a:36 for_it:142 for_me:-102 for_now:50 for_sure:-32
freno:-25 friday:-44 frio:39 frio_$:39 fue:-23 fuera:25 fuera_$:25 get:43 get__off:-25 get__on:50 get__to:99
get_a:-56 get_back:113 get_it:-27 get_me:-45 get_my:28 get_paid:68 get_the:-37 gets:33 gimme:34 gimme_a:37 give:82
give__a:60 give_me:68 go:-95 go_away:-35 going:-31 going__have:-22 going_on:45 going_to:-50 got:98 got__in:-22
got__wait:27 got_a:-27 got_it:-32 got_to:177 gracias:-38 gracias__avisar:-24 gracias__el:-29 gracias_por:-53
great:-22 hablamos:44 hablamos_$:36 hablenme:35 hablo:96 hablo_$:79 hace:-68 hace_un:-26 had_to:-29 hang:23 happy:-51
happy_with:-23 harvest:35 has:-69 has_it:-29 hasta__cobre:24 hasta__hora:-38 hasta__me:34 hasta_que:94 have:40
have_time:93 have_to:-24 hit:84 hit__up:68 hit_k:27 hit_me:68 hits:26 hmm:27 hold:61 hold_off:44 hold_that:35 home:22
hora:-68 horario:43 horario_$:24 horas_$:-27 hospital:28 hospital_$:34 how:-51 how_much:-34 hubby:76 i:-51 i__a:-33
i__it:-24 i__like:34 i__out:-51 i__paid:68 i__the:-24 i__to:25 i__you:30 i_can:33 i_cant:-32 i_feel:30 i_get:37
i_hit:22 i_know:23 i_need:80 i_think:-53 i_want:-26 i_will:31 if:-24 ill:46 ill__back:29 ill__my:-54 ill__on:26
ill__out:26 ill__to:23 ill__you:111 ill_call:85 ill_do:59 ill_get:24 ill_let:35 ill_pass:-85 ill_take:-61
ill_wait:-22 im:110 im__from:25 im__of:59 im__the:35 im_back:28 im_down:-48 im_free:25 im_out:65 im_still:-38 in:127
in_$:-131 in__bit:62 in__few:22 in__hospital:22 in__middle:72 in__spring:26 in__weeks:-36 in_a:70 in_another:50
in_june:96 in_march:26 in_may:28 in_the:32 in_two:-60 insurance:45 is:98 is__at:52 is__for:28 is__the:-34 is_on:-36
is_over:38 is_this:-28 is_tight:99 it:-103 it_$:132 it__after:-25 it__at:-24 it__i:61 it__last:-25 it__now:37
it__to:-26 it_at:36 it_back:-37 it_be:-27 it_for:48 it_in:-75 it_is:25 it_myself:-23 it_now:-73 it_to:-34 it_wait:-62
it_when:52 jale:-55 jale_$:-53 job:48 job_so:36 jueves:-39 june:106 june_$:79 junio:22 juntar:61 junto:44 just:52
just__my:27 just_had:55 k:101 k_$:116 k_miles:-29 kids__back:22 kinda:64 know:72 know_$:45 know__is:54 know_it:57
la:70 la__de:28 la__en:-48 la__pasada:-23 la__quincena:26 la__semana:-28 la__vez:-73 la_boda:26 la_escuela:23
la_noche:34 la_otra:22 la_primavera:23 la_proxima:-51 la_semana:-32 la_tarde:-28 la_temporada:52 la_ultima:-36
labor:44 labor_day:44 las_$:-36 las__millas:35 las_fiestas:25 las_horas:33 las_mil:57 last:-110 last_month:-60
later_$:74 later_one:-44 later_time:-38 le:261 le__a:-33 le_aviso:56 le_digo:81 le_faltan:31 le_hablo:73 les:274
les_aviso:49 les_digo:36 let:170 let__look:46 let__see:53 let_me:135 let_you:64 lets:53 lets__it:-30 lets_out:43
light:-32 like_$:24 like_a:-24 like_it:23 live:-26 llamenme:-35 llegue:84 llegue__las:27 llegue_a:46 llevo:52
llevo_$:43 lo__a:47 lo__de:-32 lo__el:-23 lo__en:-42 lo__mi:22 lo__pronto:-35 lo_de:24 lo_entregan:-36 lo_llevo:53
lo_mas:-37 lo_robaron:-25 lo_tienen:-28 lo_trae:25 lo_vendi:-35 lo_voy:68 lol_$:-23 look:117 look_$:23 look__my:22
looks_like:24 los:59 los_$:32 los_mil:59 lost:27 lost_my:46 luego:80 luego__digo:27 luego_les:38 lugar:-45
lugar_$:-39 lunes:-69 lunes_despues:-24 make:-51 make_it:-38 manana:-52 manejando:-101 marca:-47 march:57 march_$:25
marco:26 martes:-31 marzo:111 marzo_$:41 mas:62 mas_$:-97 mas__el:36 mas__posible:-22 mas_adelante:117 mas_para:50
mas_pronto:-42 mas_tarde:26 may:39 maybe:93 maybe_in:41 mayo:27 mayo_$:22 me:133 me_$:-168 me__al:-59 me__call:-23
me__el:63 me__im:33 me__in:42 me__june:67 me__la:23 me__las:28 me__my:48 me__on:33 me__this:-27 me__time:25
me__to:-52 me__week:85 me__what:36 me__when:-31 me__you:-32 me_about:22 me_after:33 me_again:72 me_back:-55
me_cobraron:-33 me_dan:24 me_dejaron:-23 me_in:87 me_llegue:27 me_lo:-45 me_look:46 me_marca:-56 me_next:87
me_now:-33 me_off:-31 me_on:-24 me_out:-30 me_paguen:38 me_see:53 me_some:26 me_then:96 me_tomorrow:39 me_up:55
me_van:-32 me_when:33 mejor:36 mes:-116 mes_$:-77 mes_pasado:-29 meses:55 meses_$:46 mi__y:38 mi_esposo:26 middle:68
middle_of:69 miercoles:-32 might__well:-23 might_as:-23 mil:203 mil_$:34 mil_millas:63 miles_$:24 millas_$:-27
moment:54 momento:185 momento_no:78 monday:-32 mondays:-33 money:24 money_$:-50 money__tight:96 money_is:102
month__so:42 month_is:-39 month_or:39 months:28 more:-32 moving:70 much_$:-29 much__it:22 mucho:62 muy:-42 my:60
my__back:-44 my__first:39 my__is:34 my__refund:44 my__says:30 my__so:35 my_boss:56 my_car:-52 my_chances:-53
my_ex:-28 my_job:48 my_money:-22 my_refund:-23 my_schedule:71 my_tax:55 my_wife:35 myself:-26 myself_$:-24 nada_$:-37
near:77 near__car:65 near_the:65 need:118 need_to:148 needed:-30 needed_$:-23 new:57 new_year:24 next:31 ni:-40
ninguno:40 no:23 no_$:-52 no__ahora:70 no__el:30 no__tiempo:49 no__yet:100 no_es:47 no_gracias:59 no_me:-72
no_need:-33 no_not:55 no_por:116 no_puedo:113 no_se:54 no_tengo:71 no_traigo:76 noche:34 not:166 not_$:-30
not__me:-70 not__month:22 not__my:22 not__now:64 not__this:65 not__to:-42 not__with:-23 not__yet:88 not_a:40
not_ever:-58 not_for:-47 not_going:-52 not_happy:-26 not_in:-25 not_me:-71 not_monday:-25 not_my:-38 not_now:110
not_right:114 not_sure:144 not_til:24 not_till:28 not_today:99 not_worth:-40 not_yet:159 noviembre:31 now:162
now_$:49 now__me:22 nudge:42 nuevo:30 number:-35 nunca:-39 october:31 of:-79 of__month:-39 of_the:-55 of_town:65
off_this:-23 office:-36 oh:-24 ok:-62 old:-22 on:89 on__now:31 on__refund:-58 on_it:54 on_my:46 once:107 once_the:39
one:-91 one_$:-45 ones:-24 only:22 only_at:33 open:-32 opt:-63 opt_out:-24 or_so:52 otono:29 otono_$:29
otra_quincena:22 otra_semana:31 otra_vez:-72 otro_$:-27 otro_dia:70 otro_taller:-23 out:-150 out_$:-93 out__town:68
out_the:-22 owe:-22 paguen:38 paid:44 para:100 para__lo:-27 para_cuando:-43 para_el:92 para_la:24 para_nada:-30
para_que:-46 parked:55 pasada:-24 pasado:-40 pasado_$:-28 pasando:24 pase:85 pase_la:25 pass:-101 pass_$:-79
payday:48 paz:-23 pedal:-22 pero:42 pero__que:25 phone:-43 please_$:42 please__me:-32 por:67 por__momento:53
por__no:36 por_ahora:146 por_avisar:-24 por_favor:-31 por_lo:22 por_que:-51 por_una:32 posible:-23 posible_$:-23
preguntenme:25 prices:-57 pricey:-33 primavera:34 primero:40 pronto:-50 pronto_posible:-22 proxima:-51
proxima_semana:-52 puedan:-24 puede:-25 puedo_$:57 puedo_esperar:-83 pues:-27 que__el:65 que__la:60 que__paguen:26
que_cobre:26 que_hora:-38 que_le:-31 que_no:-64 que_pase:75 que_tan:-22 quieren:-23 quincena:35 quincena_$:27
quiza:27 rato_$:-25 reach:39 recuerdeme:23 reembolso:-49 refund_$:-22 regrese:32 remind:42 remind__in:32 remind_me:43
replaced:-28 respondo:-39 revisit:39 right:114 right_$:-31 right_now:141 ring:-25 road:22 road_$:29 robaron:-30
sabado:-34 sale:-25 salga:51 save:60 saving:130 say:-45 say_no:-44 says:55 says_$:51 schedule_$:-57 school:61
school__out:53 school_lets:52 se__cuando:-27 se__la:45 se_lo:-24 season:47 second_$:33 see:134 see__my:105 semana:-65
semana_$:-35 semanas:79 semanas_$:59 sera:86 sera_$:87 shift:-24 si__quiere:24 si_dios:25 sick:-28 sign:-38
sign_me:-35 skip:-41 skip_it:-39 slow:40 slow_down:46 so_$:24 so__me:28 some:36 some_time:24 somebody:-27
sometime:-63 son:-29 sorry:-63 sorry_i:-36 soy:-26 spring_$:-41 still:-56 still__on:-58 still_waiting:-58 stop_$:-28
stop_by:37 su:-31 summer:49 sunday:31 sunday_$:26 sure:-62 sure__me:-42 surgery:50 swamped:36 take:-97
take__chances:-53 take_my:-53 tal:27 tal_vez:28 talk:41 talk__my:56 talk_to:35 taller:-32 tan_pronto:-25 tantito:32
tarde:-30 tarde_$:-40 tax:78 tax_$:-32 tax_refund:51 te:87 te__luego:-49 te_digo:64 te_escribo:-39 tell:63
tell_you:69 temporada:52 temporada_de:46 tenga:49 tengan:-68 tengo:89 tengo_tiempo:49 termine:63 text:60 text_$:28
text_me:39 texts:-58 texts_again:-46 th:22 th_$:48 that:-53 that_$:-33 the:59 the__again:-39 the__are:60 the__ask:32
the__ill:53 the__is:32 the__of:87 the__one:-27 the__time:-35 the_airport:48 the_baby:26 the_bank:-28 the_car:74
the_fall:33 the_hospital:22 the_later:-56 the_middle:70 the_moment:54 the_month:-42 the_new:34 the_oil:26 the_road:37
the_schedule:-30 the_spring:24 the_texts:-42 the_th:25 the_week:-30 the_work:-22 then:175 then_$:128 there:-26
these:46 these_days:55 they:-37 thing_$:-46 things:55 think__it:107 think_about:64 this:47 this__i:25 this_is:-34
this_month:51 this_thing:-22 this_week:93 those:-42 though:23 though_$:28 thursday:-44 thursday_$:-27 tiempo:39
tiene:-34 tiene_millas:-45 tienen:-47 tienen_$:-36 tight:109 tight_$:64 til:80 til_my:24 til_the:45 till:114 time:126
time_$:60 time__week:56 time_i:22 to:91 to_$:-25 to__all:-31 to__for:70 to__it:-31 to__me:-37 to__on:35 to__out:-23
to__the:59 to__to:30 to__up:55 to__what:52 to__wife:52 to_ask:72 to_be:-38 to_check:27 to_do:-22 to_have:-25 to_my:32
to_see:73 to_somebody:-25 to_talk:49 to_the:-87 to_wait:84 to_you:46 todavia_no:66 today:85 today_$:76 tomorrow:40
tomorrow_$:59 tomorrow_after:-28 tonight:82 tonight_$:71 too__for:-51 too_much:28 took:-42 town:48 town_$:46
traded:-34 traded__in:-25 traded_it:-25 trae:22 trae_mi:25 traigo:74 trip:-28 try:159 try__in:31 try_me:157 twice:-35
two:-92 two_weeks:-76 ultima:-41 ultima_vez:-35 un:-107 un__mas:-75 un_mes:-87 una:-30 unas:60 unas_semanas:36
unos:119 unos_meses:31 until:41 until_the:44 up:177 up_$:-28 up__it:83 up_for:75 up_in:42 ustedes:-55 ustedes_$:-24
va:42 va__mil:35 va_en:67 vacaciones:41 vacation:62 vacation_$:59 van:-34 van__cobrar:-22 van_a:-23 vemos:37
vendi:-34 vendimos:-69 ver:46 ver__mi:72 ver_con:72 verano:41 verano_$:25 vez:-120 vez_$:-47 vez_me:-30 viernes:-25
voy_a:69 vuelta:-29 vuelta_$:-26 vuelva:36 wait:32 wait__my:33 wait_til:-29 wait_till:26 was:-50 we:41 we_are:58
weather:52 week:70 week_$:63 weeks:24 weeks_$:31 went:-42 were:50 what__i:26 what__it:28 what_my:90 when:207
when__i:-38 when__is:24 when__it:-30 when__slow:47 when_do:-27 when_i:100 when_im:68 when_school:49 when_the:126
when_would:-46 when_you:-41 whenever:-78 where:-22 who:-46 who_you:-27 why:-47 why_not:-22 wife_$:35 wife__it:-32
will:98 will__you:60 will_get:51 will_it:-27 winter:-26 with_a:29 with_me:48 with_tax:-43 with_the:-31 work:-66
work_$:-78 worth:-42 would:-32 would__get:-31 would_i:-29 write:40 y:71 y__digo:24 y_me:22 y_no:-38 y_te:47 ya__me:24
ya__pase:56 ya_les:107 ya_lo:-49 ya_no:-41 ya_que:108 ya_tengo:-25 yeah:-39 yes:-76 yet:320 yet_$:197 yet__me:57
yo:169 yo__aviso:44 yo_le:98 yo_les:82 yo_no:-24 you:-100 you_$:70 you__a:-32 you__i:25 you__im:43 you__my:-47
you_all:-30 you_are:-24 you_can:-31 you_get:-31 you_know:59 you_open:-23 you_tomorrow:34 you_when:84 your:-87
"""
