"""What speaks for and against `later`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "later"
BIAS = -126
WEIGHTS = """\
#abad:-21 #ablo:101 #abor:33 #abou:46 #abre:-16 #abro:15 #acab:78 #acac:33 #acat:54 #aced:-30 #acer:-14 #acho:18
#acia:-43 #acio:17 #acos:14 #actl:15 #adas:15 #aded:-38 #adel:72 #adin:15 #ados:18 #adua:26 #affo:32 #afra:25
#afte:-47 #agai:23 #agan:19 #agen:-15 #agra:-14 #agua:-90 #ague:34 #ahor:204 #aigo:61 #ains:-14 #aire:-26 #airp:49
#ajes:-31 #akes:-30 #aled:-26 #ales:26 #alga:16 #alie:-14 #alin:40 #alle:-35 #alme:-14 #alon:-20 #alqu:-14 #alri:-62
#amac:15 #ambi:-41 #amen:-39 #amil:31 #amos:78 #ampe:22 #anan:-29 #anas:44 #ance:65 #anch:-15 #ando:113 #anej:-83
#ange:-15 #anic:-15 #anks:-51 #anme:23 #anne:22 #anos:-27 #anot:28 #anse:-14 #anta:-60 #ante:76 #anti:14 #anto:-37
#anym:-16 #anyt:16 #anyw:15 #anza:16 #apen:33 #appe:-31 #appo:-17 #appy:-50 #apri:14 #apun:-14 #aque:14 #aqui:-23
#arca:-55 #arch:30 #arco:28 #arde:-35 #arec:-14 #aren:34 #ares:17 #arge:-33 #aria:-15 #ario:34 #arke:50 #arly:-24
#aron:-97 #arou:14 #arqu:-15 #arte:-25 #arzo:27 #asad:-36 #asan:29 #ason:38 #aste:21 #ated:-14 #aten:-19 #athe:56
#atie:19 #atio:60 #atur:-21 #augu:22 #aunq:15 #auto:-34 #aver:21 #avia:45 #avin:112 #avis:135 #avor:-39 #away:-41
#aybe:77 #ayda:52 #ayin:28 #baby:18 #back:-36 #bado:-21 #baje:30 #bajo:-22 #ball:24 #band:49 #baro:-18 #base:14
#befo:15 #bein:-14 #bett:32 #betw:36 #biam:-16 #biar:-14 #bien:35 #bier:-14 #bill:-17 #blam:22 #blan:-16 #blem:-18
#blen:34 #body:-26 #bols:-46 #book:37 #boss:45 #bout:45 #brak:-20 #brar:-40 #bren:-17 #brer:23 #brua:-15 #bscr:-21
#budg:59 #buen:26 #busc:25 #busq:27 #busy:105 #cabe:67 #cabo:14 #cach:15 #caci:24 #cada:-22 #call:-32 #camb:-39
#came:-26 #canc:27 #cans:-21 #cant:102 #card:-21 #care:-29 #caro:-19 #cati:44 #cela:23 #cemb:15 #cena:33 #cesi:-17
#chan:-34 #char:-37 #chec:213 #ched:22 #choo:63 #cial:17 #cias:-41 #cibi:-21 #cidi:17 #ciem:-24 #cien:-29 #cier:-18
#cion:28 #cita:20 #ciud:22 #cked:-27 #cker:-33 #cobr:-18 #coge:-17 #come:-16 #comm:33 #como:-53 #conf:79 #cont:-22
#conv:-14 #cool:-20 #cort:53 #cost:-25 #coun:-43 #coup:17 #ctly:15 #ctob:26 #cual:-24 #cuar:40 #cuel:22 #cuen:-26
#cuer:62 #cupa:80 #cupo:-23 #dame:40 #damo:19 #davi:21 #days:81 #ddle:55 #deal:35 #deja:54 #deje:231 #dela:73
#deme:54 #denm:20 #depe:26 #depl:18 #ders:-14 #desc:-17 #desp:34 #dget:59 #dian:25 #dias:66 #dici:-25 #didn:-15
#dier:-28 #digo:177 #dill:21 #dimo:-59 #dine:97 #ding:22 #dios:18 #dire:107 #divo:-14 #doct:14 #dont:48 #dria:-14
#drop:-36 #dshi:-15 #dule:28 #each:30 #eadi:15 #eali:33 #earl:-29 #earn:27 #ease:-14 #easo:38 #eath:63 #eave:-17
#ebod:-20 #ebre:23 #ebru:-15 #ecal:-17 #ecar:44 #ecem:15 #eces:-43 #echa:-15 #ecib:-25 #ecio:-36 #ecks:35 #econ:14
#ecue:59 #edal:-30 #edan:-17 #eded:-24 #eden:-16 #edes:-38 #edul:28 #eede:-24 #eeks:20 #eels:-19 #eeze:-14 #efor:15
#efun:-17 #egan:-38 #egla:-16 #egle:19 #egre:43 #egue:64 #egun:60 #ehic:-14 #eing:-14 #ejam:68 #ejan:-90 #ejar:-38
#ejel:-33 #ejem:114 #ejen:-33 #ejor:28 #elan:84 #elel:15 #eler:-15 #eliz:-46 #elli:-14 #elva:23 #elve:21 #elvo:27
#eman:28 #embe:43 #embr:36 #emin:21 #emos:21 #empi:16 #empo:59 #enas:38 #enda:15 #endi:-93 #endo:-20 #enen:-57
#ener:-74 #enev:-66 #enga:-53 #engi:-39 #engo:103 #enin:-15 #enme:70 #enou:-23 #ensa:155 #enta:-22 #ente:24 #ento:150
#entr:-30 #ents:-15 #enty:-14 #eone:-16 #eopl:-19 #epai:15 #epen:26 #epla:-30 #eplo:18 #epte:18 #equi:-14 #eran:21
#erar:-38 #erch:-24 #erco:-14 #erda:26 #erde:27 #eren:-27 #eres:-43 #eria:68 #ermi:58 #eron:-69 #erry:-16 #erse:56
#ervi:-21 #esca:-14 #escr:14 #escu:17 #esda:-22 #eses:54 #esit:-18 #espa:-30 #espe:-85 #espo:-25 #espu:26 #esse:-14
#esta:-41 #esto:35 #eter:-16 #ethi:-20 #etim:-49 #etir:-15 #ette:32 #ettl:20 #etwe:36 #even:-18 #ever:-158 #eves:-30
#evis:58 #expe:-20 #exts:-65 #ezco:-18 #falt:20 #fami:31 #favo:-39 #feel:16 #feli:-48 #fell:-16 #feri:86 #ffic:-40
#ffor:28 #fice:-39 #fici:-14 #fier:-14 #fies:18 #fina:49 #find:18 #fine:-17 #fini:17 #firm:89 #firs:60 #fixe:-27
#floj:21 #folk:14 #fond:-20 #ford:32 #fore:14 #foun:-26 #free:15 #fren:-52 #frid:-48 #frio:33 #from:-20 #fron:-18
#fter:-47 #fund:-22 #gain:23 #gast:19 #gent:-19 #gets:47 #ghts:-20 #gimm:30 #gine:-39 #give:70 #givi:-32 #gone:20
#grac:-42 #gras:14 #grea:-28 #gres:43 #gual:-27 #guan:-81 #guen:35 #guno:40 #gunt:71 #guro:14 #guys:-25 #habl:111
#hace:-82 #hama:15 #hank:-55 #happ:-68 #hard:-14 #harg:-34 #have:34 #head:-22 #heca:49 #heck:73 #hedu:28 #heel:-19
#hene:-66 #here:-49 #hese:41 #hici:-23 #hiel:-15 #hift:-16 #hink:22 #hits:27 #hizo:-15 #hock:-17 #hold:99 #hole:-14
#hone:-28 #hool:63 #hora:140 #hori:50 #hose:-36 #hosp:33 #houg:46 #houl:16 #hous:21 #hubb:67 #hurs:-48 #husb:26
#iaje:19 #ibir:-33 #ible:-26 #ibra:-17 #icen:17 #ices:-43 #icie:-41 #iday:-35 #iddl:57 #idnt:-15 #ield:-15 #iemb:25
#iemp:31 #ienc:17 #iend:-14 #iene:-82 #ierc:-14 #iere:-27 #iero:-79 #ierr:-16 #ieve:19 #ight:162 #igua:-28 #iles:53
#imav:21 #imer:22 #imes:-18 #imme:30 #imos:-66 #inal:60 #ince:27 #inco:16 #inda:44 #inde:-14 #inds:-15 #iner:95
#info:-17 #ings:44 #ingu:34 #inis:18 #insu:45 #inte:-49 #into:-19 #ione:39 #irad:-16 #irmo:93 #irpo:49 #irst:60
#isar:-20 #ised:-14 #isen:27 #isit:49 #ital:27 #itas:18 #iuda:22 #ivin:-36 #ivor:-14 #ixed:-28 #jale:-54 #jalo:-17
#jame:62 #jand:-85 #jaro:-22 #jelo:-33 #jeme:115 #jenm:-14 #juev:-30 #juli:14 #july:19 #jump:-22 #june:114 #juni:16
#junk:-18 #junt:133 #just:52 #kind:53 #know:44 #ksgi:-26 #labo:33 #lace:-40 #lama:-25 #lame:-38 #lamo:26 #land:18
#lann:23 #lant:61 #last:-114 #ldnt:-15 #leas:-17 #leav:-21 #leep:16 #legu:67 #lela:15 #lend:30 #lenm:36 #lent:-24
#lero:-14 #lets:51 #leve:-24 #levo:42 #lice:22 #ligh:-52 #limp:16 #list:-22 #llam:-56 #llas:-22 #lleg:68 #llev:26
#llin:-19 #lmen:-14 #lojo:19 #lone:-19 #long:-30 #look:89 #lost:23 #lqui:-14 #lrig:-62 #ltan:27 #ltim:-42 #lueg:71
#luga:-45 #lunc:-22 #lune:-54 #maco:15 #make:-36 #mana:-30 #mand:-19 #mane:-84 #marq:-15 #mart:-23 #marz:27 #mati:-29
#mave:21 #mayb:77 #mayo:28 #mbia:-29 #mbol:-45 #mbre:31 #mebo:-20 #medi:24 #mejo:28 #mell:-20 #menm:-34 #mens:-26
#ment:210 #meon:-16 #mero:42 #mese:54 #meth:-20 #meti:-53 #midd:57 #mier:-14 #mile:32 #mily:33 #mind:14 #mine:48
#ming:17 #mmer:31 #mome:232 #mond:-52 #mone:17 #mont:50 #more:-40 #morn:-14 #morr:43 #movi:53 #mpan:-16 #mped:22
#mpie:15 #mpor:23 #mpre:-27 #much:35 #myse:-19 #nale:17 #nals:33 #nana:-26 #ncel:22 #ncen:32 #nces:-43 #nche:-31
#ncia:19 #ndam:28 #ndar:20 #nday:-20 #nden:-15 #nder:-14 #ndim:-58 #ndsh:-15 #near:75 #nece:-20 #need:63 #neja:-78
#nero:22 #neve:-91 #next:27 #nfir:92 #ngan:-100 #nged:-19 #ngin:-41 #ngun:34 #nigh:59 #nish:14 #nksg:-26 #nner:15
#noch:37 #noth:28 #noug:-23 #nove:15 #novi:48 #nque:14 #nsaj:-25 #nsar:190 #nsub:-17 #nsur:45 #ntam:18 #ntan:43
#ntar:61 #ntas:-20 #nten:61 #nter:-59 #ntes:23 #nths:32 #ntie:-15 #ntil:52 #ntis:16 #ntit:22 #ntra:34 #ntre:-58
#ntro:-14 #nuev:23 #numb:-36 #nume:-18 #nunc:-34 #nymo:-16 #nyth:20 #obar:-17 #ober:26 #oble:-25 #obra:-38 #oche:34
#ocke:-24 #octo:40 #ocup:60 #odav:21 #oday:74 #offi:-39 #oiga:14 #oint:-28 #okin:-22 #olan:-18 #olen:-15 #olks:14
#omat:-28 #omeb:-20 #omen:191 #omeo:-16 #omer:-20 #omes:51 #omet:-72 #omor:43 #once:104 #onda:-56 #ondo:-50 #onea:-14
#ones:23 #oney:17 #onfi:86 #onge:-17 #onig:91 #only:19 #onth:54 #onto:-45 #ooki:-22 #ooks:22 #open:-49 #oper:52
#ople:-20 #oppe:17 #orad:24 #orar:39 #orge:14 #orit:46 #orks:-17 #orqu:-17 #orra:-16 #orro:47 #orry:-65 #orta:23
#orth:-36 #orto:29 #osib:-22 #ospi:33 #otal:-28 #othe:26 #otra:-32 #ouch:14 #ough:20 #ould:-41 #ound:-26 #ount:-54
#oupl:26 #ours:16 #ouse:22 #ovem:15 #over:36 #ovid:15 #ovie:57 #ovin:56 #owns:-17 #oxim:-50 #paci:-28 #paga:21
#pagu:34 #paid:51 #pair:15 #para:83 #park:43 #pase:61 #paso:-15 #pass:-107 #pati:16 #payd:52 #payi:28 #pect:-15
#peda:-30 #pena:21 #pend:27 #pens:161 #peop:-19 #perd:-18 #pere:16 #pero:-16 #phon:-37 #pido:-23 #pita:27 #plac:-33
#plan:34 #plat:15 #play:20 #plen:-14 #ploy:18 #poco:19 #poin:-28 #pond:-30 #porq:-17 #port:38 #poso:15 #pped:-18
#ppen:-17 #ppoi:-17 #prec:-30 #pref:-14 #preg:71 #pren:-28 #pres:-21 #pret:15 #pric:-97 #pril:14 #prim:36 #prin:-35
#pron:-46 #prox:-46 #ptem:18 #pued:-45 #pues:-19 #pull:-17 #punt:-21 #quea:-21 #qued:-33 #quee:-15 #quen:14 #quie:-65
#quin:24 #quiz:36 #rada:26 #rade:-78 #radu:27 #raig:64 #rain:-14 #rake:-19 #rame:14 #ramo:25 #ranc:43 #rand:-23
#rano:22 #rari:39 #raro:-29 #razo:17 #rcha:-32 #rcol:-14 #rday:-22 #rdem:39 #reac:30 #read:31 #reat:-17 #reca:-18
#rece:-21 #reci:-68 #reco:-15 #recu:60 #reem:-45 #refu:-18 #rega:-34 #regr:43 #regu:67 #reme:19 #remi:20 #rend:-29
#reno:-42 #rent:25 #repa:14 #repl:-44 #rero:23 #resa:-18 #rese:19 #reso:24 #resp:-38 #ress:-21 #rest:-16 #resu:16
#reti:-15 #revi:57 #rged:-29 #rgen:-18 #rger:45 #rget:14 #riba:20 #ribo:-21 #rice:-87 #rida:-41 #righ:83 #rima:21
#rime:22 #rinc:-17 #ring:-74 #rita:39 #rked:51 #rmin:59 #rned:-21 #rner:15 #rnin:-21 #road:46 #roba:-16 #robl:-14
#rong:-19 #ront:-64 #room:-18 #roxi:-50 #rpor:48 #rque:-32 #rren:-28 #rrow:43 #rsda:-41 #rtes:-24 #rtos:-14 #ruar:-15
#ruen:-16 #rvic:-21 #saba:-21 #sabe:18 #sado:-20 #saje:-31 #sale:-18 #salg:16 #sali:-15 #same:-14 #sand:37 #sant:14
#sarl:14 #satu:-18 #save:51 #savi:123 #says:57 #sban:26 #sche:28 #scho:63 #scue:19 #sday:-63 #seas:105 #seco:14
#self:-27 #sell:-14 #sema:22 #seme:32 #send:-17 #senm:26 #sent:-19 #sept:29 #sera:96 #serv:-22 #sett:20 #sgiv:-26
#shes:25 #shie:-15 #shif:-16 #shoc:-17 #shou:14 #sibl:-24 #sick:-19 #sign:-34 #sigo:22 #sirv:-14 #sita:18 #sito:-17
#sits:-18 #sitt:16 #skip:-33 #slee:16 #slow:29 #smel:-20 #some:-56 #soon:15 #sorr:-62 #spac:-37 #sper:-87 #spit:25
#spon:-43 #spri:-24 #spue:26 #ssed:-31 #stad:14 #stan:-67 #sted:-73 #ster:19 #stic:-18 #stil:-51 #stim:19 #stol:-17
#stom:-16 #stop:-19 #stoy:62 #sual:15 #subs:-21 #suel:24 #summ:31 #sund:33 #sura:45 #sure:-59 #surg:42 #tado:35
#take:-113 #tale:-22 #talk:36 #tall:-31 #tand:32 #tard:-39 #taro:21 #tede:-38 #tell:55 #temb:18 #temp:15 #tena:30
#tend:-16 #teng:77 #tenm:21 #tere:-40 #term:59 #tern:-18 #text:-50 #than:-60 #that:-59 #them:-17 #then:164 #ther:17
#thes:41 #they:-44 #thin:48 #this:28 #thos:-35 #thou:55 #thur:-48 #tico:-16 #tiem:36 #tien:-56 #tigh:84 #till:59
#tima:-40 #time:45 #tion:52 #tira:-23 #tist:16 #tito:36 #tobe:26 #toca:-16 #toda:92 #tole:-15 #toma:-24 #tomo:43
#tonc:21 #toni:90 #took:-52 #tore:17 #tota:-28 #town:48 #trad:-62 #trai:70 #tree:-18 #treg:-41 #tric:-14 #trip:-34
#true:-16 #tter:37 #tues:-28 #turd:-18 #tuve:14 #twee:36 #twic:-27 #uall:20 #ualm:-14 #ualq:-14 #uand:29 #uant:-112
#uare:45 #uary:-24 #ubby:67 #ubre:23 #ubsc:-21 #ucho:68 #udad:22 #udge:88 #uebl:28 #ueda:-40 #uede:-43 #ueez:-14
#uego:70 #uela:21 #uelt:-20 #uelv:73 #uena:-18 #uenm:17 #uent:-27 #uerd:63 #uesd:-16 #uest:-30 #ueve:-32 #uevo:21
#ugar:-45 #ugus:22 #uier:-62 #uinc:31 #uiza:36 #uldn:-15 #ulio:14 #ulti:-42 #umbe:-36 #umer:-18 #umme:31 #unas:28
#unca:-34 #unch:-22 #unda:24 #unes:-54 #unio:16 #unos:112 #unqu:15 #unsu:-17 #unta:89 #unte:49 #unti:67 #unto:35
#uple:26 #uran:42 #urda:-18 #urge:34 #ursd:-41 #usba:26 #usca:17 #usqu:27 #uste:-72 #usua:15 #utom:-28 #vaca:86
#vehi:-14 #vemb:15 #vemo:30 #vend:-77 #vera:49 #verc:-24 #vers:51 #very:16 #viaj:14 #vibr:-15 #viej:17 #viem:48
#ving:136 #vise:52 #visi:48 #viso:104 #vorc:-14 #vuel:30 #wait:24 #want:-15 #week:81 #ween:36 #well:-19 #went:-35
#were:53 #what:-16 #whee:-19 #when:126 #wher:-19 #wice:-27 #wife:29 #will:70 #wind:-16 #with:18 #work:-70 #wort:-37
#woul:-42 #writ:15 #wron:-19 #xima:-46 #yday:52 #yeah:-31 #ying:19 #ymor:-16 #your:-68 #ysel:-19 #ythi:22
%again_later:347 %again_later%away:137 %again_later%bring:21 %again_later%busy:110 %again_later%call_off:65
%again_later%car:71 %again_later%car_part:-46 %again_later%do_it:99 %again_later%doubt:42 %again_later%elsewhere:30
%again_later%fails:40 %again_later%family:98 %again_later%gone_car:19 %again_later%leave_me:45 %again_later%lift:-82
%again_later%machine:-15 %again_later%money:65 %again_later%noise:-38 %again_later%odometer:18
%again_later%on_way:-39 %again_later%opening:-39 %again_later%pay_day:112 %again_later%phone:-53
%again_later%place:-37 %again_later%question:18 %again_later%refuse:157 %again_later%season:42 %again_later%shake:-44
%again_later%shift_it:50 %again_later%thanks:-84 %again_later%who:-17 %agree:-44 %agree%away:-30 %agree%bring:-128
%agree%busy:-20 %agree%car:16 %agree%car_part:-39 %agree%do_it:24 %agree%doubt:-27 %agree%elsewhere:-18
%agree%family:34 %agree%gone_car:40 %agree%message:50 %agree%money:29 %agree%odometer:22 %agree%on_way:-41
%agree%pay_day:18 %agree%question:-73 %agree%refuse:158 %agree%shift_it:14 %agree%staff:26 %agree%thanks:-49
%agree%wrong_one:-15 %away:267 %away%bring:56 %away%busy:18 %away%call_off:91 %away%car:43 %away%car_part:-72
%away%do_it:-28 %away%doubt:17 %away%elsewhere:54 %away%gone_car:-23 %away%how_long:-30 %away%leave_me:-47
%away%lift:-41 %away%money:-21 %away%noise:-21 %away%on_way:-31 %away%pay_day:32 %away%phone:77 %away%place:16
%away%question:100 %away%refuse:-102 %away%season:29 %away%shift_it:36 %away%start_again:28 %away%wrong_one:17
%bad:-39 %bad%bring:60 %bad%busy:63 %bad%call_off:-19 %bad%meaning:-18 %bad%refuse:-29 %bad%start_again:17 %bring:22
%bring%busy:32 %bring%call_off:47 %bring%car_part:16 %bring%do_it:-28 %bring%doubt:62 %bring%elsewhere:-30
%bring%fails:21 %bring%gone_car:-14 %bring%how_long:-28 %bring%money:62 %bring%on_way:17 %bring%pay_day:39
%bring%phone:39 %bring%question:-62 %bring%refuse:67 %bring%season:36 %bring%shift_it:24 %bring%smoke_smell:26
%bring%start_again:20 %bring%thanks:18 %busy:197 %busy%call_off:19 %busy%car_part:22 %busy%gone_car:107
%busy%how_long:49 %busy%lift:29 %busy%pay_day:55 %busy%phone:-35 %busy%question:14 %busy%refuse:-19 %busy%season:36
%busy%shift_it:-37 %busy%start_again:49 %call_off:24 %call_off%car:-53 %call_off%car_part:-40 %call_off%do_it:-35
%call_off%doubt:19 %call_off%elsewhere:-44 %call_off%family:-28 %call_off%gone_car:-15 %call_off%how_long:19
%call_off%leave_me:-18 %call_off%lift:-65 %call_off%message:-78 %call_off%money:76 %call_off%odometer:-31
%call_off%phone:-38 %call_off%place:-25 %call_off%question:24 %call_off%refuse:46 %call_off%season:133
%call_off%shift_it:-83 %call_off%smoke_smell:18 %call_off%staff:-17 %call_off%thanks:27 %call_off%who:-14 %car:-118
%car%car_part:-52 %car%do_it:-19 %car%gone_car:-42 %car%lift:18 %car%money:-23 %car%pay_day:-41 %car%place:61
%car%refuse:20 %car%shake:-15 %car%shift_it:-14 %car%start_again:-32 %car_part:-187 %car_part%do_it:-37
%car_part%elsewhere:-25 %car_part%fails:-37 %car_part%family:29 %car_part%gone_car:-20 %car_part%money:30
%car_part%noise:-26 %car_part%odometer:18 %car_part%on_way:-35 %car_part%pay_day:-52 %car_part%phone:-50
%car_part%place:-20 %car_part%question:-38 %car_part%refuse:96 %car_part%shake:-32 %car_part%shift_it:-24
%car_part%smoke_smell:-20 %car_part%start_again:-33 %car_part%wrong_one:-15 %do_it:-140 %do_it%doubt:39
%do_it%elsewhere:-31 %do_it%family:-20 %do_it%gone_car:-32 %do_it%message:56 %do_it%money:20 %do_it%on_way:-20
%do_it%pay_day:-41 %do_it%question:25 %do_it%refuse:-39 %do_it%season:-42 %do_it%shift_it:-33 %do_it%smoke_smell:19
%do_it%staff:-17 %do_it%start_again:20 %do_it%wrong_one:-57 %doubt:133 %doubt%elsewhere:-42 %doubt%family:55
%doubt%how_long:-15 %doubt%message:31 %doubt%money:-15 %doubt%odometer:87 %doubt%on_way:43 %doubt%pay_day:35
%doubt%question:-17 %doubt%refuse:70 %doubt%season:99 %doubt%shift_it:-15 %doubt%staff:21 %doubt%wrong_one:-91
%elsewhere:-74 %elsewhere%gone_car:-32 %elsewhere%how_long:-15 %elsewhere%message:-28 %elsewhere%money:-29
%elsewhere%odometer:56 %elsewhere%phone:-23 %elsewhere%place:-15 %elsewhere%refuse:-30 %elsewhere%season:46
%elsewhere%shift_it:-14 %elsewhere%staff:-32 %elsewhere%wrong_one:-53 %fails:-96 %fails%question:-20 %family:23
%family%money:16 %family%phone:23 %family%question:25 %family%refuse:-37 %family%start_again:52 %family%wrong_one:41
%gone_car:-109 %gone_car%how_long:57 %gone_car%leave_me:18 %gone_car%money:34 %gone_car%on_way:-16
%gone_car%pay_day:-28 %gone_car%question:70 %gone_car%refuse:46 %gone_car%season:39 %gone_car%shift_it:-39
%gone_car%start_again:-21 %gone_car%wrong_one:-24 %how_long:15 %how_long%lift:41 %how_long%odometer:25
%how_long%on_way:-16 %how_long%opening:-22 %how_long%pay_day:32 %how_long%place:-19 %how_long%question:-44
%how_long%refuse:48 %how_long%season:-14 %how_long%shift_it:-44 %how_long%wrong_one:25 %leak:-29 %leave_me:-57
%leave_me%message:-55 %leave_me%money:25 %leave_me%odometer:63 %leave_me%opening:34 %leave_me%pay_day:-39
%leave_me%place:31 %leave_me%question:21 %leave_me%refuse:34 %leave_me%season:-18 %leave_me%shift_it:21
%leave_me%start_again:-26 %lift:-108 %lift%money:-34 %lift%odometer:-21 %lift%on_way:-16 %lift%pay_day:-98
%lift%season:-126 %lift%shift_it:20 %lift%start_again:38 %lift%wrong_one:55 %machine:-45 %machine%message:-16
%machine%question:14 %meaning%pay_day:39 %message:-94 %message%on_way:47 %message%pay_day:-35 %message%phone:-14
%message%question:24 %message%refuse:-47 %message%start_again:-67 %message%thanks:-27 %message%wrong_one:-79
%money%noise:16 %money%odometer:-39 %money%pay_day:41 %money%place:32 %money%refuse:17 %money%season:47
%money%shift_it:-33 %money%start_again:-32 %money%wrong_one:23 %noise:-102 %noise%pay_day:17 %noise%question:-45
%noise%season:16 %noise%start_again:-15 %odometer%opening:46 %odometer%pay_day:-38 %odometer%phone:-46
%odometer%question:64 %odometer%shift_it:87 %odometer%staff:39 %on_way:-81 %on_way%pay_day:18 %on_way%place:-23
%on_way%question:-40 %on_way%refuse:15 %on_way%shift_it:-23 %on_way%start_again:32 %opening:-48 %opening%question:-65
%opening%wrong_one:14 %pay_day:275 %pay_day%question:151 %pay_day%refuse:72 %pay_day%season:-36 %pay_day%shift_it:34
%pay_day%start_again:22 %pay_day%wrong_one:43 %phone:-166 %phone%refuse:-15 %phone%season:107 %phone%shift_it:-37
%phone%staff:-50 %phone%start_again:-18 %phone%wrong_one:38 %place:-19 %place%question:-49 %place%refuse:66
%place%season:19 %question:-48 %question%refuse:37 %question%season:140 %question%shake:-52 %question%smoke_smell:-18
%question%start_again:-14 %question%thanks:-18 %question%who:-60 %question%wrong_one:20 %refuse:-116
%refuse%season:149 %refuse%shift_it:-31 %refuse%staff:-42 %refuse%start_again:-69 %refuse%thanks:-65 %refuse%who:-19
%refuse%wrong_one:-34 %season:324 %season%shift_it:121 %season%start_again:57 %season%thanks:20 %season%wrong_one:84
%shake:-76 %shift_it%start_again:-22 %shift_it%thanks:-16 %shift_it%wrong_one:-44 %smoke_smell:-62
%smoke_smell%start_again:20 %staff:-80 %staff%wrong_one:-25 %start_again:-91 %start_again%wrong_one:-25 %thanks:-80
%thanks%wrong_one:16 %who:-102 %wrong_one:-59 @?:-245 @after_visit:-171 @car:-43 @confirm:-305 @confirm_stop:-75
@day:-20 @later:378 @nothing:-240 @odometer:42 @offers:-100 @reading:-175 @time:-95 @times:-97 @walk_in:-128 ^_$:-16
^_a:-28 ^_about:-28 ^_after:127 ^_ahora:102 ^_ahorita:33 ^_al:99 ^_ando:103 ^_any:-36 ^_apenas:31 ^_are:-15 ^_asi:-37
^_ask:82 ^_at:62 ^_call:-37 ^_can:-56 ^_cant:85 ^_check:28 ^_como:-26 ^_con:-16 ^_count:-42 ^_cuando:94 ^_cuanto:-52
^_dame:17 ^_day:-18 ^_de:35 ^_dejame:46 ^_deje:182 ^_dejeme:115 ^_despues:58 ^_dios:18 ^_do:-79 ^_dont:67 ^_el:-50
^_en:93 ^_end:-35 ^_entre:-14 ^_es:-30 ^_eso:-29 ^_estoy:94 ^_feliz:-35 ^_first:-49 ^_for:-23 ^_get:-30 ^_give:32
^_go:-33 ^_good:-19 ^_got:98 ^_gracias:-28 ^_hablenme:37 ^_hace:-28 ^_had:-24 ^_hit:16 ^_hmm:25 ^_hold:63 ^_how:-74
^_i:-48 ^_ill:116 ^_im:-34 ^_in:-25 ^_is:-54 ^_it:-59 ^_just:66 ^_la:-113 ^_le:-43 ^_let:132 ^_llamenme:-28 ^_lo:119
^_lol:-18 ^_los:-17 ^_lost:-21 ^_luego:55 ^_mas:152 ^_maybe:59 ^_me:-128 ^_mejor:-24 ^_might:-14 ^_monday:-19
^_my:-83 ^_need:117 ^_ni:-19 ^_ninguno:20 ^_no:-22 ^_not:147 ^_oh:-27 ^_ok:-48 ^_on:47 ^_once:32 ^_one:-20 ^_opt:-58
^_otro:83 ^_please:-43 ^_por:-17 ^_puedo:-95 ^_put:24 ^_que:-72 ^_se:-71 ^_si:-102 ^_sign:-22 ^_sorry:-54 ^_still:-27
^_sure:-172 ^_tengo:92 ^_text:53 ^_thanks:-21 ^_that:-17 ^_the:-123 ^_this:-30 ^_thursday:-20 ^_todavia:15 ^_too:35
^_took:-15 ^_traded:-31 ^_va:17 ^_wait:30 ^_we:15 ^_were:63 ^_what:-79 ^_when:119 ^_whenever:-38 ^_where:-16
^_who:-16 ^_why:-26 ^_will:43 ^_y:-39 ^_ya:39 ^_yeah:-24 ^_yes:-71 ^_yo:127 ^_you:-99 a__a:14 a__en:-16 a__first:19
a__in:-20 a__is:-31 a__mil:79 a__of:-45 a__or:32 a__thing:31 a__time:67 a__weeks:67 a__when:-16 a_bit:47 a_call:-25
a_couple:26 a_few:67 a_good:72 a_los:57 a_mi:-40 a_month:34 a_new:18 a_que:19 a_ring:-15 a_week:-31 about:46
about__tires:18 about_it:55 about_to:-16 abren:-16 abren_$:-18 abril_$:-19 acabe:60 acabo:14 add:-28 adelante:51
adelante_$:16 afford:32 afford_it:34 after:-41 after_$:-69 after__drop:-16 after__th:-29 after_all:-16 after_i:-15
after_the:37 again:25 again_$:-118 again__june:15 again_in:84 aguanta:-86 ahi:36 ahi_le:17 ahi_me:17 ahora:157
ahora_$:28 ahora_no:134 ahorita:38 ahorita_$:20 ahorita__puedo:26 ahorita_no:68 aire:-26 aire_$:-24 airport:49
al__que:28 al_rato:56 al_trabajo:-37 all:-55 all_$:-48 am:14 an:-33 and:-75 and_cant:15 and_do:16 and_not:-14
anda:-14 andamos:22 ando:145 ando__de:21 ando__la:17 ando_en:30 ano:49 ano_$:22 anos:-21 another:28 another_time:16
antes:15 any:-59 any__next:-19 any_time:-23 anymore:-16 anything:23 apenas:33 april:14 are:38 are_$:-17 are__the:55
are_in:55 are_you:-27 around:14 arregle:19 as_well:-18 asi:-59 asi_$:-24 ask:368 ask__again:61 ask__in:46
ask_again:20 ask_me:228 at:154 at__the:-15 at_k:103 at_my:19 at_the:90 at_this:23 august:22 aunque:15 avisar:-18
aviso:87 aviso_$:86 away:-41 away_$:-37 baby:18 back:-35 back_$:-67 back__the:-20 back__you:84 back_in:-22
back_out:-19 back_to:79 back_up:-14 bad:-18 baje:29 baje_la:29 be:-68 be_ready:-18 been_on:-19 before:15 being:-14
better:32 better_$:39 between:36 bien:28 bien_$:-28 bill:-15 bit:49 book:29 borren:-14 boss:45 boss_$:34 brakes:-18
break:-18 break_$:-14 budget:59 buen:32 buen_dia:-20 bus:-17 busy:105 but__much:19 but_how:19 but_i:-14 but_not:22
but_what:-16 by_$:-24 cada:-22 calendar:33 call_$:-22 call__at:-14 call_me:-50 came:-30 can:-73 can__a:21
can__check:-16 can__get:-29 can__me:-27 can__the:28 can__wait:-71 can_it:-61 can_you:-17 cancelela:15 cant:97
cant__in:-29 cant__it:39 cant__the:22 cant_come:-26 car:-24 car_$:-26 cards:-16 cards_$:-16 care:-29 care_of:-28
carro_$:-14 carro_esta:17 cars:15 chance:59 changed:-14 checar:46 check:65 check_$:25 check__me:45 check_engine:-36
check_with:62 checks:35 christmas_$:18 ciudad:14 cobraron:-32 cobraron__mas:-15 cobraron_de:-15 come:-26 come_at:14
come_in:-20 comes:51 comes_$:27 como:-51 con:35 con__trabajo:-14 con_mi:78 con_ustedes:-15 confirmo:93 corto:31
cost:-28 could_you:14 count:-43 count_me:-43 couple:26 cuando:31 cuando__a:33 cuando__de:17 cuando__el:15
cuando__la:62 cuando__vuelta:-21 cuando_doy:-21 cuando_freno:-28 cuando_llegue:17 cuando_lo:-65 cuando_me:49
cuando_regrese:21 cuando_tenga:51 cuanto:-27 cuanto__la:17 cuanto__me:-15 cuanto__van:-15 cuanto_me:-33
cuanto_rato:-18 da:-32 dame:24 dan:28 day:-22 day_after:-23 days:106 days_$:92 de:69 de__en:-18 de__no:68
de__proxima:-19 de__que:-17 de__semana:-14 de_dinero:48 de_eso:30 de_la:22 de_las:-73 de_los:22 de_mas:-15 de_mes:-19
de_mi:-17 december:15 december_$:15 deja:39 dejame:62 dejar:-20 dejaron:-22 deje:182 dejelo:-33 dejelo_asi:-14
dejeme:115 dejen:-16 dejen_de:-16 dejenme:-14 del:-46 del_trabajo:-24 deme:15 den:24 denme:28 depends:17 despues:36
despues_$:82 despues__la:20 despues__las:-59 despues_de:-28 despues_del:-51 di:-21 di_de:-16 dia:51 dia_$:-28
dia__la:-14 dias:66 diciembre:-24 diciembre_$:-34 did:-26 didnt:-15 dieron:-19 digo:184 digo_$:129 dinero:97
dinero_$:98 dios:18 do:-77 do__at:14 do__contact:-16 do__need:-36 do__open:-20 do_i:-43 do_it:85 do_not:-27
do_they:-21 do_you:-39 dont:48 dont__it:49 dont__me:-36 dont__my:14 dont_have:56 dont_know:63 dont_text:-34
dont_think:-26 dos:-34 down:16 down_$:-29 down_the:43 doy:-23 doy_vuelta:-21 drive_$:-20 drive__a:35 drive_for:37
driving_$:27 drop:-32 drop_the:-16 early:-23 easter:16 easter_$:23 eh:18 el:76 el_$:14 el__a:-15 el__de:-14
el__despues:-64 el__esta:22 el__mes:50 el__para:19 el__pasado:-20 el__pero:27 el_aire:-24 el_ano:28 el_carro:26
el_de:-14 el_dia:-16 el_dinero:23 el_jueves:-17 el_lunes:-43 el_martes:-18 el_otro:55 el_pedal:-25 el_precio:-16
el_sabado:-17 el_verano:44 en:164 en__el:-14 en__hasta:15 en__noche:29 en__que:25 en__taller:-15 en__tarde:-20
en__y:21 en_diciembre:-19 en_el:17 en_enero:-60 en_junio:16 en_la:-27 en_marzo:26 en_mayo:16 en_mil:37 en_otro:-21
en_paz:-21 en_que:-14 end:-40 end__the:-35 end_of:-37 enero:-73 enero_$:-76 engine:-39 enough:-23 enough_$:-21
entonces:21 entre:-17 entre_semana:-16 entregan:-35 entregan_$:-34 es:-45 esa:-18 esas:-14 escriban:-15 escribo:-21
escuela:22 escuela_$:26 ese:-18 eso_$:-15 espacio:-36 espacio_$:-35 esperar:-60 espero:-45 esposo:15 esposo_$:18
esta:29 esta_semana:32 estan:-56 estan_$:-27 este:20 este_mes:35 estoy:52 estoy_bien:-26 estoy_de:48 estoy_en:30
estoy_manejando:-69 ever:-70 ever_$:-57 every:24 ex:-57 exactly:15 fall:15 faltan:27 family:33 favor:-42 favor_$:-17
febrero:23 february:-15 feel:29 feel_like:35 feliz:-46 feria:86 few:66 fiestas:18 fin:-28 fin__semana:-19 fin_de:-25
find:18 find_a:21 fine:-17 finish:20 first:60 first_$:76 fixed:-27 folks:14 fondo:-20 for:78 for_a:33 for_it:130
for_me:-89 for_my:25 for_now:49 for_sure:-20 for_that:-21 forget:14 found:-26 free:20 freno:-26 freno_$:-17
frenos:-17 friday:-48 friday_$:-18 frio:33 frio_$:33 from:-20 front:-18 get:47 get__on:51 get__to:90 get_a:-48
get_back:99 get_it:-24 get_me:-29 get_my:29 get_paid:77 gets:47 gimme:30 give:70 give__a:46 give_me:49 go:-75
go_away:-31 going__have:-27 going_on:44 going_to:-30 gone:20 good_$:-24 got:77 got__in:-15 got__wait:26 got_it:-21
got_to:137 gracias:-41 gracias__avisar:-17 gracias__el:-23 gracias_por:-46 great:-27 gusto:15 gusto_$:21 guys:-24
hablamos:22 hablamos_$:16 hable:-18 hablenme:36 hablo:101 hablo_$:84 hace:-61 hace_un:-29 had__get:-15 had_it:-19
had_to:-26 hago_para:-14 hang:22 happy:-50 hard:-19 has:-58 has__on:-19 has_been:-19 has_it:-24 hasta__hora:-33
hasta__me:32 hasta_las:-25 hasta_que:72 have:32 have__back:-14 have__say:-23 have_time:89 have_to:-20 hay_que:17
her:-20 here:16 hes:18 hicieron:-16 his:-15 hit:80 hit__up:65 hit_k:28 hit_me:65 hits:27 hizo:-15 hmm:25 hold:84
hold_off:43 hora:-48 hora_abren:-18 horario:34 horario_$:23 horas_$:-27 hospital:27 hospital_$:29 how:-62 how__is:30
how_much:-35 hoy_no:14 hubby:62 husband:26 i:-15 i__a:-31 i__have:-14 i__it:-22 i__like:34 i__my:25 i__out:-29
i__paid:78 i__so:-14 i__the:-24 i__to:20 i__you:40 i_am:17 i_can:27 i_cant:-48 i_dont:-18 i_drop:-19 i_feel:30
i_get:57 i_had:-22 i_hit:22 i_let:19 i_need:73 i_paid:-15 i_said:15 i_think:-48 i_want:-30 i_will:30 i_would:15 id:26
igualmente:-14 ill:48 ill__a:-16 ill__in:20 ill__out:19 ill__you:89 ill_be:-15 ill_call:92 ill_do:64 ill_let:32
ill_need:-16 ill_pass:-82 ill_take:-70 ill_wait:-18 im:112 im__it:-16 im__of:51 im__the:33 im__work:-19 im_back:20
im_free:28 im_good:-20 im_on:24 im_out:57 in:136 in_$:-109 in__fall:26 in__hospital:15 in__middle:62 in__month:-16
in__spring:35 in__week:-15 in__weeks:-29 in_a:34 in_another:45 in_april:16 in_january:-14 in_july:14 in_june:107
in_march:16 in_my:-15 in_the:65 in_tomorrow:-20 in_two:-48 insurance:45 interested:-20 into:-19 ir:18 is:62 is_$:-14
is__at:35 is__for:16 is__in:14 is__now:15 is__really:16 is__the:-35 is__with:16 is_a:-20 is_ok:16 is_on:-47
is_plenty:-14 is_this:-25 is_tight:85 it:-118 it_$:92 it__after:-23 it__i:63 it__it:-14 it__last:-32 it__ready:-18
it__the:14 it__to:-18 it_at:33 it_back:-34 it_be:-28 it_for:35 it_in:-72 it_myself:-16 it_now:-71 it_off:-18 it_on:14
it_really:14 it_to:-28 it_wait:-68 jaja:26 jale:-54 jale_$:-54 jalonea:-14 job:46 job_so:34 jueves:-30 jueves_$:-14
julio:14 july:19 july_$:18 june:114 june_$:87 junio:16 junio_$:16 junto:29 just:52 just__it:-17 just_had:44 k:103
k_$:112 k_miles:-23 kids_are:17 kinda:47 know:51 know_$:32 know__is:53 know_it:57 la:69 la__de:26 la__el:-18
la__en:-56 la__por:18 la__que:20 la__vez:-64 la_ciudad:14 la_escuela:22 la_llanta:14 la_noche:37 la_otra:14
la_proxima:-45 la_semana:-23 la_tarde:-32 la_ultima:-29 labor:33 labor_day:36 las:-35 las_$:-28 las__y:18 las_mil:38
last:-113 last_month:-68 late:-25 later:22 later_$:80 later_one:-38 le:225 le__a:-17 le__de:-18 le__la:28 le__que:-17
le_aviso:25 le_digo:69 le_hago:16 les:282 les_aviso:57 let:139 let_me:114 let_the:-16 let_you:65 lets:51 lets__it:-30
lets_out:46 light:-29 like_$:25 like_a:-21 like_it:29 list:-19 list_$:-14 llamenme:-34 llanta__un:18 llegar_a:15
llegue:72 llegue_a:41 llegue_el:23 llevo:42 llevo_$:21 lo__a:39 lo__cuando:32 lo__de:-33 lo__en:-34 lo__hace:-16
lo__pronto:-27 lo_entregan:-35 lo_llevo:45 lo_mas:-28 lo_vendi:-26 lo_voy:55 lol_no:-15 look:99 look_$:30 look_at:28
looks:23 looks_like:27 los:74 los_$:48 los__en:-18 los__me:-16 los_mil:57 lost:23 lost_my:43 luego:71 luego_le:17
lugar:-44 lugar_$:-40 lunch:-20 lunch_$:-14 lunes:-54 make:-33 make__to:-17 make_it:-24 manana:-25 manejando:-86
marca:-48 march:39 martes:-23 marzo:27 mas:45 mas_$:-85 mas__el:33 mas_adelante:108 mas_pronto:-36 mas_tarde:22
may_$:14 maybe:77 maybe__the:22 maybe_in:52 maybe_next:-24 mayo:23 mayo_$:28 me:135 me_$:-171 me__a:-28 me__after:-19
me__al:-69 me__at:23 me__cuanto:16 me__de:15 me__el:45 me__en:14 me__i:15 me__im:33 me__in:44 me__june:57 me__las:28
me__mas:17 me__mi:24 me__my:40 me__next:19 me__on:15 me__por:-15 me__ring:-14 me__the:-15 me__this:-24 me__to:-27
me__week:79 me__when:-41 me__work:-16 me_after:30 me_again:65 me_back:-36 me_cobraron:-32 me_da:-22 me_dan:32
me_dejaron:-29 me_den:22 me_dieron:-16 me_escriban:-14 me_in:83 me_llegue:23 me_lo:-30 me_next:86 me_off:-43
me_on:-14 me_out:-31 me_paguen:39 me_some:30 me_then:82 me_to:-15 me_tomorrow:32 me_up:46 me_van:-24 me_what:-14
me_when:31 me_who:-15 mejor:20 mensajes:-31 mensajes_$:-19 mero:19 mes:-88 mes_$:-48 mes_pasado:-15 meses:54
meses_$:51 mi__en:17 mi__y:36 mi_esposo:15 mi_jefe:14 middle:57 middle_of:59 mil:182 mil_$:25 mil_millas:48 miles:34
miles_$:30 millas_$:-22 momento:168 momento_no:70 monday:-20 mondays:-32 money:14 money_$:-53 money__tight:81
money_is:88 month:22 month_is:-34 months:32 more:-24 morning_$:-17 move:14 moving:57 much:-28 much_$:-36 much__it:19
much_is:20 mucho:69 muy:-38 my:93 my__back:-38 my__is:40 my__refund:58 my__says:28 my__so:34 my_boss:57 my_car:-42
my_ex:-22 my_husband:22 my_job:42 my_shift:-17 my_tax:67 my_wife:42 myself:-19 myself_$:-18 nada_$:-23 near:77
near_the:63 necesito:-16 need:99 need__ride:-17 need_to:123 needed:-24 needed_$:-18 never:-24 new:56 new_year:30
next:27 next_month:34 next_week:20 ni:-35 night:-22 night_$:-17 ninguno:41 no:61 no_$:-48 no__ahora:48 no__el:16
no__llegar:16 no__que:-17 no__tengo:-15 no__tiempo:46 no__voy:-15 no__what:-15 no_es:30 no_gracias:59 no_im:-15
no_le:-26 no_lo:-27 no_me:-59 no_need:-26 no_not:65 no_ocupo:-21 no_por:87 no_puedo:112 no_se:53 no_tengo:70
no_traigo:74 noche:40 not:162 not_$:-31 not__me:-62 not__month:20 not__now:75 not__the:41 not__this:66 not__to:-41
not__yet:73 not_a:43 not_contact:-16 not_for:-35 not_going:-53 not_happy:-24 not_interested:-18 not_my:-26 not_now:90
not_right:121 not_sure:136 not_the:-18 not_til:20 not_till:16 not_today:95 not_yet:145 november:15 noviembre:48
now:192 now_$:71 now__me:21 nuevo:30 nuevo_$:15 number:-35 number_$:-16 numero:-14 nunca:-34 o:33 october:26
ocupo:-23 ocupo_$:-21 of:-79 of__month:-28 of_the:-45 of_this:-15 of_town:63 off:-42 off_$:-36 off__now:22 off_for:21
off_this:-22 office:-39 office_$:-14 oh:-28 oh__another:-18 ok:-49 old:-14 on:79 on_$:-24 on__for:23 on__now:32
on_a:18 on_it:44 on_my:26 on_that:-26 on_the:-34 once:83 once_the:25 one:-56 one_$:-37 only:19 open:-41 opt:-66
opt_me:-20 opt_out:-32 or_so:51 otra:-31 otra__el:18 otra_semana:37 otra_vez:-66 otro_$:-32 otro_dia:75 otro_mes:-17
otro_taller:-19 out:-110 out_$:-75 out__town:63 out_the:-14 overcharged:-24 owe:-17 owns:-17 paguen:39 paid:51
paid_$:23 para:70 para__lo:-19 para__no:-19 para__otro:20 para_cuando:-38 para_el:103 para_entonces:17 para_que:-32
parado:16 parked:51 pasado:-28 pasado_$:-15 pase:65 paso:-15 pass:-98 pass_$:-71 pay:-19 pay_for:-17 payday:44
paying:28 paz:-21 pedal:-30 people:-19 pero:29 pero__que:19 pero_ya:21 phone:-30 phone_me:-17 pie:-23 please_$:27
please__me:-33 plenty:-14 por:57 por__de:14 por__no:32 por_ahora:108 por_avisar:-17 por_favor:-31 por_lo:17
por_que:-56 por_una:31 porque:-17 posible:-19 posible_$:-20 precio:-22 preguntame:14 prices:-47 primavera:21
primero:38 primero_$:19 promised:-14 pronto:-45 proxima:-45 proxima_semana:-43 puedan:-25 puede:-14 pueden:-16
puedo:18 puedo_$:48 pues:-33 pues_$:-28 put_it:20 q:26 que:44 que_$:-14 que__abren:-19 que__borren:-14 que__el:58
que__estan:-23 que__la:40 que_el:16 que_hora:-28 que_le:-23 que_no:-67 que_se:35 que_tan:-32 quede:-14 quedo:-15
quieren:-24 quincena:33 quincena_$:27 quiza:16 quote:-20 rato:15 rato_$:-34 reach:33 ready:16 ready_$:17 recibir:-14
recuerdeme:33 refund:-17 regrese:21 regreso:29 remind:36 remind__in:35 remind_me:36 repair:15 replaced:-30
respondo:-30 right:145 right_$:-16 right__i:-14 right_now:155 ring:-32 ring_me:-14 road:41 road_$:35 robaron:-17
sabado:-28 sale:-16 salga:15 same:-14 save:52 saving:123 say:-57 say_no:-47 says:57 says_$:43 schedule:32
schedule_$:-45 school:56 school__out:46 school_lets:46 se__cuando:-25 se__la:35 se_lo:-28 season:42 second:18
second_$:26 see:97 see__my:92 seguro:14 semana:-42 semana_$:-35 semanas:56 semanas_$:62 september:18 september_$:18
sera:97 set:-16 shes:25 shift:-15 shop:-15 should:17 should__be:14 si_no:23 si_puedo:20 si_si:21 sick:-19 sign:-31
sign__up:-14 sign_me:-27 skip:-33 skip_it:-31 slow:30 slow_down:43 so:36 so_$:22 so__me:20 sold_$:20 some:38
some_time:27 somebody:-20 someone:-16 something:-20 sometime:-42 son:-28 soon_$:-16 soon_as:17 sorry:-62 sorry_i:-43
soy:-18 spring:-24 spring_$:-41 squeeze:-14 squeeze__in:-14 squeeze_me:-14 start:-16 sticker:-15 still:-51
still__on:-65 stolen:-15 stop_$:-25 stop_by:40 su:-16 summer:31 summer_$:24 sunday:34 sunday_$:33 sure:-55
sure__me:-45 sure_thing:-15 sus:-17 t:15 take:-107 take__off:-15 take_it:-15 take_my:-63 tal:31 tal_vez:31 talk:32
talk__the:-17 talk_to:34 taller:-26 taller_$:-18 tan:-18 tap:14 tarde:-32 tarde_$:-39 tax:55 tax_$:-34 tax_refund:68
te:103 te__luego:-45 te_digo:78 telefono_$:-17 tell:56 tell_you:73 tenga:49 tengan:-75 tengo:104 tengo_tiempo:46
termine:56 text:40 text_$:28 text_me:35 texts:-65 texts_again:-48 th_$:26 thanks:-23 thanksgiving:-26
thanksgiving_$:-27 that:-59 that_$:-37 that_last:-17 the:26 the__again:-42 the__are:50 the__ask:34 the__from:-17
the__is:48 the__lol:29 the__of:65 the__one:-20 the__so:-17 the__time:-41 the__when:-18 the__year:18 the_airport:49
the_calendar:14 the_car:59 the_fall:26 the_holidays:31 the_hospital:20 the_last:14 the_later:-56 the_middle:61
the_month:-31 the_new:21 the_office:-18 the_road:48 the_schedule:-31 the_spring:35 the_texts:-43 the_week:-24
the_windshield:-15 the_work:-20 them:-17 then:164 then_$:98 there:-43 there_$:-17 these:41 these_days:56 they:-43
thing:-38 thing_$:-45 thing_to:-17 things:54 think_$:-20 think__it:95 think_about:65 this:28 this_$:-19 this_is:-25
this_month:47 this_week:84 those:-35 though:27 though_$:30 thought:19 thousand_$:17 through_the:20 thursday:-41
thursday_$:-33 tiempo:35 tiene:-16 tiene__y:15 tienen:-43 tienen_$:-32 tight:84 tight_$:58 til_the:42 till:121
till_the:23 time:108 time_$:53 time__week:48 time_i:22 time_next:-18 to:92 to__a:-20 to__and:24 to__for:68 to__it:-23
to__me:-28 to__no:-25 to__on:23 to__out:-15 to__the:53 to__this:-19 to__to:18 to__up:46 to_ask:53 to_be:-18
to_check:34 to_do:-28 to_get:-28 to_have:-31 to_hold:15 to_know:-14 to_my:40 to_pay:-18 to_say:-26 to_see:55
to_somebody:-26 to_talk:39 to_that:-23 to_the:-75 to_wait:80 to_work:-15 to_you:50 toca:-18 todavia:21 todavia_no:59
today:75 today_$:70 tomorrow:44 tomorrow_$:70 tomorrow_after:-27 tonight:91 too_$:-18 too__for:-51 too_much:14
took:-52 took__of:-25 took_care:-25 took_it:-16 totaled:-22 town:49 town_$:45 trade:-26 traded:-38 traded__in:-29
traded_it:-30 traigo:66 trip:-33 try:154 try__in:25 try_me:150 tuesday:-15 tuve:14 tuve_que:14 twice:-27 two:-66
two_weeks:-56 ultima:-36 ultima__me:-19 ultima_vez:-30 un:-93 un__de:-17 un_mes:-74 una:-25 unas:28 unos:112
unsubscribe:-15 until:52 until_the:42 up:155 up_$:-20 up_for:74 up_in:25 up_when:14 us:18 usted:-14 ustedes:-38
usually:15 va:26 va_el:-14 va_en:47 vacaciones:33 vacation:56 van:-33 van_a:-26 vemos:30 vendi:-23 vendimos:-58
ver:59 ver_con:54 verano:33 verano_$:32 vez:-85 vez_$:-46 vez_me:-28 viaje:19 voy:18 voy_a:56 vuelta:-21 vuelta_$:-25
wait:29 wait_$:20 wait_for:27 want_my:-14 was:-38 way:-17 we:32 we_are:56 week:55 week_$:35 weeks:21 weeks_$:16
well:-19 well_$:-19 went:-35 were:53 what__are:-14 what__i:23 what_is:-25 what_time:-17 when:192 when__i:-28
when__is:14 when__slow:44 when__you:-21 when_do:-21 when_i:111 when_im:67 when_the:102 when_would:-43 when_you:-22
whenever:-66 where:-22 who:-52 who__are:-15 who_you:-20 why:-41 why_not:-24 wife:25 wife__it:-33 wife__the:14
wife_says:-18 will:70 will__you:45 will_be:-14 will_it:-24 windshield:-15 with_a:27 with_me:48 with_that:16
with_the:-27 work:-60 work_$:-78 works:-16 worth:-37 would:-37 would__be:-14 would_i:-35 wow:-17 write:15 wrong:-19
y:78 y__cuanto:-14 y__digo:32 y__le:16 y__lo:-20 y_me:28 y_no:-35 y_te:57 ya_$:-15 ya__se:22 ya_les:113 ya_lo:-52
ya_me:-21 ya_no:-37 ya_que:93 ya_tengo:-26 yeah:-31 yes:-82 yesterday_$:-15 yet:272 yet_$:175 yo:139 yo_le:66
yo_les:85 you:-111 you_$:60 you__a:-26 you__i:20 you__im:49 you__me:-38 you__my:-38 you_all:-33 you_are:-21
you_can:-31 you_check:-19 you_folks:14 you_get:-22 you_guys:-24 you_have:-16 you_know:64 you_open:-31 you_people:-17
you_tomorrow:47 your:-69 yours:14
"""
