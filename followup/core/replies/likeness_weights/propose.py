"""What speaks for and against `propose`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "propose"
BIAS = -202
WEIGHTS = """\
#abad:161 #able:67 #abor:-31 #abou:106 #abra:41 #abre:-98 #abri:30 #acab:-19 #acac:23 #acei:20 #acio:115 #acom:26
#acro:25 #addr:17 #adel:-16 #adit:28 #ados:-77 #adra:33 #affo:15 #afte:103 #agai:-30 #agos:19 #ahor:-47 #aigo:15
#aila:76 #aiti:-15 #ajaj:-22 #ajan:-60 #ajar:-16 #ajes:-14 #akes:-41 #akin:43 #aled:-14 #ales:-20 #alga:-14 #algo:120
#alie:54 #alio:-15 #alla:14 #ally:25 #alqu:148 #also:62 #aman:19 #ambi:-68 #amel:-30 #amos:14 #ampe:-25 #anan:68
#ance:-60 #anco:-16 #anda:-66 #ando:33 #anej:-19 #aner:22 #anit:23 #anme:-39 #anso:27 #anta:-20 #ante:45 #anto:19
#anyt:169 #apar:-16 #apen:19 #appe:-20 #apri:47 #apun:-26 #arar:17 #arda:-33 #arde:31 #aria:16 #ario:-94 #arla:15
#arli:80 #arly:63 #aron:-47 #arou:57 #arri:21 #arro:-23 #arte:96 #arto:15 #asad:-14 #asap:412 #asen:-18 #asse:-14
#asta:-74 #aste:-42 #ater:58 #ates:19 #atev:19 #athe:-22 #atte:-19 #atur:77 #ause:-26 #avad:26 #avai:105 #avia:-25
#aybe:83 #ayda:-22 #baby:-32 #bado:159 #baja:-102 #bajo:65 #batt:-17 #beca:-21 #been:-35 #befo:74 #bett:52 #betw:22
#biar:-35 #bier:15 #blem:-32 #blue:-30 #book:-20 #both:-15 #bout:160 #brak:31 #brea:17 #bren:-98 #bump:-19 #busc:17
#busy:-14 #caba:-17 #caci:33 #call:-70 #camb:-72 #came:-35 #camp:18 #canc:-63 #cans:24 #carr:-27 #cars:-16 #caus:-26
#ceit:20 #cena:-16 #cept:22 #cerr:-66 #cesi:43 #chec:-20 #ched:-45 #chev:45 #choo:25 #chri:-30 #cial:-27 #cide:-15
#cier:24 #ciga:15 #cion:38 #cita:30 #clas:26 #clea:18 #cles:19 #clos:39 #cobr:-30 #cole:82 #come:-28 #comm:-14
#como:54 #comp:-28 #conf:-34 #cosa:-19 #coul:99 #crac:22 #crib:-46 #cros:24 #ctio:14 #cuad:33 #cual:71 #cuan:44
#cycl:19 #davi:-25 #days:-25 #ddre:17 #deal:26 #deci:-18 #deja:-16 #dela:-24 #deme:-14 #denm:-14 #dent:15 #depe:-71
#desc:20 #desp:31 #dias:25 #dice:-14 #dier:14 #diez:14 #diff:-16 #diga:28 #digo:-81 #dime:-16 #ding:31 #dito:24
#dnes:63 #does:-51 #doin:-15 #domi:-23 #dont:20 #door:45 #dred:-32 #dres:16 #dria:47 #drop:82 #dule:-44 #dura:-15
#eads:-15 #eady:-23 #eall:32 #eals:-20 #earl:143 #east:-38 #easy:16 #eave:20 #ebaj:-14 #ecau:-21 #eces:32 #ecia:-30
#ecid:-18 #ecio:-34 #ecit:20 #ecti:15 #edal:-27 #edan:113 #eded:-31 #edes:32 #edio:41 #edne:71 #edul:-44 #eede:-31
#eeke:20 #eeks:-35 #eeze:40 #efie:-14 #efor:74 #egar:-35 #egre:-14 #egue:-29 #egun:-26 #eigh:-24 #eite:20 #eith:34
#ejem:-14 #ejor:38 #eken:20 #elan:-18 #eliz:-16 #else:18 #elvo:-17 #eman:101 #emin:-36 #emos:-41 #empr:25 #ence:-24
#enda:-15 #ende:-51 #endo:40 #endr:123 #ends:-28 #ener:-19 #enev:110 #enga:120 #engi:23 #enin:125 #enla:-18 #enme:-50
#enos:91 #ensa:-38 #ento:22 #entr:69 #eone:28 #epen:-71 #ephe:-15 #eran:27 #erar:-20 #erco:98 #eren:-22 #eria:-15
#erne:73 #erra:-66 #erre:31 #esas:86 #esca:23 #escr:-40 #esda:125 #esit:43 #esnt:-25 #esos:73 #espa:56 #espe:-46
#espo:-14 #espu:31 #esqu:19 #essa:-21 #essi:-18 #esta:-118 #este:32 #esto:37 #etim:16 #etir:79 #ette:60 #etti:22
#ettl:-17 #etwe:22 #even:57 #ever:66 #eves:67 #exce:23 #exti:-18 #fast:-17 #fech:20 #feli:-17 #fere:-15 #feri:-17
#ffer:-17 #ffic:28 #ffor:15 #fice:30 #figu:16 #fill:-18 #find:35 #fine:-17 #firm:-28 #firs:41 #flus:15 #ford:15
#fore:71 #forg:-27 #free:21 #fren:-19 #frid:122 #from:78 #fter:93 #gain:-30 #gamo:24 #ganm:-22 #garo:-19 #gent:-43
#gett:22 #gine:23 #give:-69 #givi:22 #gles:18 #goin:43 #good:36 #gost:19 #gran:26 #grea:-37 #grin:33 #gual:29
#guen:-31 #guie:43 #guna:41 #gunt:-22 #gure:16 #guys:-67 #habl:-34 #habr:42 #hake:-58 #haki:37 #half:31 #hanc:15
#hang:-18 #hank:-17 #hast:-64 #hate:18 #have:97 #heck:-29 #hedu:-44 #heel:16 #hene:110 #here:22 #heve:45 #hich:44
#hici:-16 #hijo:-23 #hing:46 #hird:-33 #hirt:21 #hold:-16 #hole:23 #home:31 #hool:36 #hora:-47 #hori:-34 #hort:16
#hose:92 #houl:-27 #hour:-28 #hris:-30 #humo:-53 #hump:56 #hund:-23 #hurs:96 #iado:-25 #iaje:-23 #iaro:-14 #ible:199
#ibre:51 #iche:45 #icks:16 #iday:116 #idea:-20 #iemp:-14 #iend:58 #iene:97 #ient:29 #iera:67 #ierc:102 #iere:-17
#iern:72 #iero:-38 #ierr:41 #iffe:-16 #igan:22 #igar:15 #ight:37 #igua:29 #igue:-41 #igui:34 #igur:16 #ilab:77
#ille:-18 #imer:22 #imes:16 #imos:-19 #inan:-27 #ince:15 #inde:32 #indi:29 #ingl:16 #ingo:-23 #ings:107 #ingu:31
#insp:19 #inst:56 #inut:-16 #iona:-15 #ione:25 #iper:27 #ipio:15 #irad:32 #ired:47 #ires:-20 #irmo:-50 #irst:41
#irty:21 #isie:25 #isit:-22 #ismo:43 #istm:-30 #itch:-64 #iten:-14 #ithe:34 #itin:-16 #itte:-21 #jaja:-17 #jeje:-35
#jueg:-18 #juev:68 #just:-17 #keep:-18 #kend:20 #kids:55 #kind:-16 #king:58 #know:-22 #ksgi:23 #labl:73 #labo:-31
#lace:-14 #lado:30 #land:-16 #late:43 #lear:20 #leas:17 #leav:15 #left:21 #lega:-30 #lego:32 #legu:-23 #leme:-35
#lets:-22 #leva:26 #leve:21 #lgun:-14 #libr:53 #lien:45 #lier:80 #like:106 #line:18 #lled:-27 #lleg:-22 #llev:29
#loan:24 #lock:20 #long:-20 #look:-21 #lose:29 #lqui:148 #ltim:24 #lueg:-25 #luga:32 #lunc:-20 #lune:135 #lush:15
#make:27 #mana:171 #mand:-57 #many:27 #mart:101 #mayb:83 #mbia:-58 #mean:-26 #medi:59 #mejo:35 #mela:-40 #meno:96
#mens:-30 #meon:28 #mera:27 #mess:-22 #meti:16 #mier:102 #migh:16 #mina:-28 #mind:-60 #mine:-17 #ming:-24 #minu:-16
#mism:53 #miso:16 #moda:26 #moki:16 #mome:-14 #mond:112 #mont:21 #more:-33 #morn:29 #morr:68 #moto:18 #move:-67
#mped:-14 #mpra:34 #mpre:-19 #much:-17 #muev:-23 #myse:-25 #nana:64 #ncel:-61 #nces:18 #ndan:-24 #nday:83 #nder:-25
#ndin:24 #ndra:108 #ndre:-32 #ndri:15 #near:-15 #nece:41 #need:35 #neit:30 #neph:-15 #nero:-35 #nesd:71 #nest:86
#neve:54 #next:184 #nfir:-30 #ngan:115 #nger:-18 #ngin:22 #ngle:16 #ngun:31 #nico:37 #nine:45 #ning:160 #nito:22
#nksg:23 #nobo:-15 #noma:23 #none:75 #noon:40 #nsaj:-30 #nspe:19 #nste:47 #ntem:-34 #ntes:60 #ntit:15 #nton:25
#ntra:29 #ntre:40 #nuev:-21 #nyth:109 #nyti:20 #oane:24 #obbl:15 #obod:-15 #oclo:-16 #odav:-25 #oday:24 #odem:-15
#odri:32 #oesn:-25 #offi:30 #oing:28 #oles:74 #omas:30 #omen:-14 #omeo:28 #omes:-36 #omin:-19 #omod:33 #omor:91
#once:16 #onda:112 #oner:63 #ones:88 #onfi:-31 #only:52 #onta:33 #onte:15 #onth:22 #onto:66 #oone:147 #oors:46
#open:69 #opin:26 #oppe:-14 #oque:-14 #oqui:41 #orar:-86 #orcy:19 #orgo:-15 #orit:-27 #orni:28 #orqu:43 #orre:-14
#orro:71 #orry:15 #osed:19 #osib:137 #ossi:79 #osta:-14 #otal:-15 #otat:37 #otor:18 #ould:83 #ound:22 #oupl:16
#oupo:-23 #ours:-59 #ousa:-18 #over:-20 #ovin:-19 #owli:18 #oxim:32 #paci:63 #pack:-22 #para:123 #part:-23 #pasa:-24
#pase:-37 #paso:22 #pass:-14 #past:15 #payd:-22 #peci:-24 #pect:23 #peda:-29 #pena:17 #pend:-80 #peni:86 #pens:-14
#pera:-26 #perm:14 #pero:115 #phew:-15 #phon:-15 #pick:57 #ping:26 #plac:-17 #plan:-18 #pode:-22 #podr:28 #pons:-26
#poqu:36 #porq:43 #posi:136 #poss:80 #pped:-22 #pran:40 #prec:-35 #preg:-22 #pren:-16 #pres:25 #pril:47 #prim:20
#pron:121 #prox:31 #pued:257 #puer:-15 #pues:18 #pull:16 #punt:-16 #puro:-16 #puse:-15 #push:-18 #quar:14 #quee:45
#quen:-22 #quie:114 #quin:26 #quis:31 #quit:66 #quiv:-14 #rack:20 #rado:-33 #rain:-15 #rake:31 #ranc:-16 #rand:28
#rani:24 #rano:15 #rant:17 #rari:-86 #rato:-15 #rcol:101 #rcyc:19 #rdan:-16 #rday:72 #rdec:15 #read:-35 #reak:19
#real:41 #reat:-42 #rece:-19 #reci:-37 #reet:29 #refi:-14 #regr:-14 #regu:-33 #remi:-36 #rend:-16 #reno:-26 #rent:-15
#rest:23 #resu:-18 #reti:79 #revi:-14 #rgen:-43 #rgot:-15 #rick:18 #rida:121 #ride:19 #righ:48 #rime:22 #rind:33
#ring:-28 #rist:-28 #rita:-21 #rivi:-17 #rlie:80 #rmed:16 #rmin:-22 #rnes:74 #rnin:25 #rong:-44 #ront:125 #ross:24
#rota:45 #roun:54 #roxi:32 #rque:44 #rrad:-66 #rran:-16 #rren:21 #rrib:15 #rrow:68 #rter:14 #rtes:104 #ruck:30
#saba:161 #sage:-18 #said:-29 #saje:-30 #sala:-30 #sale:-55 #sali:55 #same:-32 #sand:-29 #satu:76 #says:-14 #scan:32
#sche:-44 #scho:36 #scri:-46 #sday:132 #self:-27 #sema:106 #send:-22 #sett:-17 #sgiv:23 #shak:-21 #shes:-15 #shop:-50
#shor:16 #shou:-37 #sibl:218 #side:-23 #siem:-15 #sier:22 #siet:15 #sito:45 #slot:-30 #slow:20 #smok:20 #sold:37
#some:44 #soon:153 #sorr:15 #soun:-28 #spac:58 #sper:-33 #spue:31 #sque:53 #squi:25 #ssag:-21 #ssed:-20 #ssib:81
#stan:-58 #stea:46 #sted:52 #ster:-43 #stma:-30 #stoy:30 #stre:28 #sual:-22 #suel:-18 #suit:21 #sund:-30 #swap:-27
#swit:-59 #take:-20 #tate:17 #tati:14 #tead:47 #tede:46 #tele:-15 #tell:-15 #teme:-34 #temp:40 #tend:118 #teng:134
#tera:14 #term:-22 #tery:-17 #test:37 #teve:19 #text:-82 #than:-37 #that:17 #then:68 #ther:43 #thin:45 #thos:92
#thur:94 #tien:96 #till:-67 #tima:14 #time:90 #ting:-24 #tion:14 #tipo:24 #tira:33 #tire:34 #tito:15 #tmas:-30
#tmrw:16 #todo:-36 #told:-18 #tomo:73 #tonc:19 #torc:19 #tota:-15 #trae:36 #trai:-24 #tran:16 #tree:25 #treg:-19
#tres:20 #tric:18 #truc:29 #tter:23 #ttin:19 #ttle:-21 #tues:124 #turd:76 #twee:23 #uadr:33 #ualq:148 #uand:48
#uart:20 #udge:-14 #ueak:19 #ueda:161 #uedo:87 #ueez:45 #uego:-43 #uelv:-20 #uenm:-17 #uesd:54 #ueva:-17 #ueve:60
#uevo:-22 #ugar:32 #uien:23 #uier:136 #uisi:25 #uite:-17 #uito:66 #uivo:-14 #ulti:23 #unch:-20 #unda:-33 #undr:-32
#unds:-27 #unes:135 #unic:27 #unos:-43 #unte:-47 #uple:16 #upon:-23 #urda:76 #urge:-20 #urno:21 #urns:-16 #usan:-18
#used:-17 #uste:67 #usua:-20 #vaca:17 #vail:105 #varl:20 #vemo:-14 #veni:42 #vera:-23 #vers:-28 #very:-48 #vete:15
#viaj:-19 #vier:47 #ving:-22 #vise:-19 #visi:-22 #voic:-16 #want:20 #wapp:-23 #wedn:71 #weds:28 #week:104 #ween:23
#went:-25 #were:-22 #what:14 #whee:16 #when:87 #whic:44 #whol:-19 #wifi:-31 #will:29 #wind:-15 #wipe:26 #witc:-59
#with:-34 #wlin:18 #wobb:15 #work:49 #wron:-44 #xcep:24 #xima:16 #ximo:16 #xtin:-18 #ycle:19 #yday:-18 #yeah:19
#year:-19 #your:38 #ysel:-25 #ythi:101 #ytim:19 %again_later:32 %again_later%agree:43 %again_later%bring:83
%again_later%busy:-57 %again_later%call_off:23 %again_later%car:-38 %again_later%car_part:-53 %again_later%do_it:18
%again_later%doubt:-99 %again_later%elsewhere:-28 %again_later%fails:17 %again_later%family:15 %again_later%lift:-20
%again_later%message:-16 %again_later%money:-40 %again_later%odometer:-50 %again_later%on_way:57
%again_later%opening:68 %again_later%pay_day:-108 %again_later%phone:-45 %again_later%place:-31
%again_later%refuse:40 %again_later%season:-117 %again_later%smoke_smell:-16 %again_later%staff:28
%again_later%start_again:-22 %again_later%wrong_one:36 %agree%away:14 %agree%bad:20 %agree%busy:-23
%agree%call_off:59 %agree%car:14 %agree%car_part:38 %agree%doubt:54 %agree%elsewhere:27 %agree%family:78
%agree%gone_car:50 %agree%how_long:118 %agree%leave_me:24 %agree%machine:30 %agree%meaning:37 %agree%money:-37
%agree%noise:-23 %agree%odometer:68 %agree%on_way:66 %agree%opening:25 %agree%pay_day:29 %agree%phone:44
%agree%question:20 %agree%season:51 %agree%shift_it:61 %agree%smoke_smell:-37 %agree%start_again:-36 %agree%thanks:19
%agree%wrong_one:83 %away:-44 %away%busy:-20 %away%call_off:-41 %away%car:-33 %away%car_part:-16 %away%family:-18
%away%gone_car:36 %away%how_long:47 %away%leave_me:33 %away%lift:75 %away%on_way:21 %away%opening:29 %away%place:-18
%away%question:29 %away%refuse:-32 %away%shift_it:-31 %bad%machine:32 %bad%meaning:29 %bad%noise:14 %bad%refuse:-15
%bad%shake:34 %bring:105 %bring%busy:17 %bring%car:17 %bring%car_part:37 %bring%elsewhere:-27 %bring%fails:34
%bring%family:17 %bring%how_long:23 %bring%leave_me:29 %bring%noise:18 %bring%odometer:-31 %bring%on_way:-42
%bring%opening:14 %bring%phone:29 %bring%question:79 %bring%refuse:-41 %bring%season:-24 %bring%shift_it:-91
%bring%staff:36 %bring%wrong_one:-44 %busy:34 %busy%call_off:30 %busy%do_it:-14 %busy%family:-19 %busy%leave_me:55
%busy%odometer:14 %busy%opening:-31 %busy%place:-25 %busy%question:19 %busy%refuse:47 %busy%season:-32
%call_off%doubt:24 %call_off%elsewhere:25 %call_off%family:40 %call_off%gone_car:-29 %call_off%how_long:48
%call_off%lift:22 %call_off%meaning:22 %call_off%message:-19 %call_off%money:17 %call_off%odometer:33
%call_off%on_way:53 %call_off%opening:27 %call_off%pay_day:-30 %call_off%place:18 %call_off%question:20
%call_off%refuse:105 %call_off%season:-84 %call_off%shift_it:44 %call_off%start_again:-16 %call_off%thanks:-30
%call_off%who:-23 %call_off%wrong_one:44 %car%car_part:29 %car%fails:14 %car%gone_car:-35 %car%how_long:18
%car%lift:63 %car%money:-14 %car%noise:24 %car%odometer:14 %car%pay_day:18 %car_part:56 %car_part%do_it:38
%car_part%elsewhere:18 %car_part%family:-22 %car_part%lift:15 %car_part%machine:17 %car_part%money:16
%car_part%noise:58 %car_part%opening:21 %car_part%place:41 %car_part%question:-19 %car_part%season:-16
%car_part%smoke_smell:19 %car_part%staff:-18 %car_part%wrong_one:-33 %do_it:-79 %do_it%doubt:26 %do_it%elsewhere:-18
%do_it%gone_car:-15 %do_it%how_long:-54 %do_it%odometer:-14 %do_it%on_way:35 %do_it%opening:30 %do_it%pay_day:-27
%do_it%season:-41 %do_it%shift_it:20 %do_it%smoke_smell:15 %do_it%staff:-26 %do_it%wrong_one:27 %doubt:-46
%doubt%elsewhere:-26 %doubt%how_long:-26 %doubt%on_way:15 %doubt%phone:17 %doubt%place:19 %doubt%season:-41
%doubt%shift_it:-78 %doubt%wrong_one:-19 %elsewhere:-25 %elsewhere%leave_me:18 %elsewhere%pay_day:-14
%elsewhere%phone:15 %elsewhere%place:25 %elsewhere%question:20 %elsewhere%refuse:39 %elsewhere%staff:14
%elsewhere%wrong_one:-33 %fails:35 %fails%opening:16 %fails%phone:22 %fails%place:16 %fails%refuse:-24
%fails%shift_it:-34 %fails%smoke_smell:14 %family%leave_me:28 %family%odometer:-33 %family%question:-29
%family%refuse:19 %family%shift_it:-15 %family%wrong_one:17 %gone_car:14 %gone_car%on_way:16 %gone_car%opening:17
%gone_car%phone:27 %gone_car%season:-32 %gone_car%thanks:-16 %how_long:102 %how_long%leave_me:28
%how_long%odometer:-24 %how_long%on_way:39 %how_long%opening:-84 %how_long%pay_day:-35 %how_long%phone:-17
%how_long%question:-100 %how_long%refuse:29 %how_long%shift_it:35 %how_long%staff:-24 %how_long%start_again:-14
%how_long%who:-17 %leave_me:48 %leave_me%message:-30 %leave_me%money:18 %leave_me%on_way:-14 %leave_me%pay_day:41
%leave_me%refuse:-34 %leave_me%season:37 %leave_me%shift_it:27 %leave_me%smoke_smell:31 %leave_me%start_again:-21
%lift:35 %lift%odometer:14 %lift%on_way:43 %lift%opening:22 %lift%question:-28 %lift%refuse:55 %lift%shift_it:14
%lift%wrong_one:17 %machine:18 %machine%meaning:30 %machine%shake:34 %machine%wrong_one:24 %meaning:-22
%meaning%question:-78 %meaning%shake:34 %message:-151 %message%on_way:-26 %message%pay_day:16 %message%refuse:-24
%message%start_again:-14 %money:-86 %money%pay_day:-17 %money%question:69 %money%refuse:-37 %money%season:-14
%money%shift_it:-15 %money%smoke_smell:-45 %money%wrong_one:-36 %noise:31 %noise%question:-14 %noise%refuse:-25
%noise%start_again:15 %odometer:44 %odometer%on_way:15 %odometer%refuse:26 %odometer%shift_it:-16 %odometer%staff:22
%on_way%phone:15 %on_way%place:39 %on_way%question:55 %on_way%refuse:40 %on_way%shift_it:59 %on_way%staff:-18
%on_way%thanks:31 %on_way%wrong_one:-28 %opening:-196 %opening%phone:17 %opening%place:-77 %opening%question:-90
%opening%refuse:31 %opening%staff:-54 %opening%wrong_one:39 %pay_day:-83 %pay_day%phone:16 %pay_day%question:-28
%pay_day%refuse:-20 %pay_day%season:17 %pay_day%shift_it:-38 %phone:-143 %phone%question:-20 %phone%refuse:75
%phone%season:-15 %phone%shift_it:-37 %phone%staff:-34 %phone%who:-15 %place%question:39 %place%refuse:29
%place%season:15 %place%shift_it:-20 %question:-23 %question%refuse:43 %question%season:-41 %question%staff:-14
%question%who:-60 %question%wrong_one:17 %refuse%season:-77 %refuse%shift_it:30 %refuse%thanks:-18
%refuse%wrong_one:35 %season:-70 %season%shift_it:-84 %season%start_again:-20 %season%thanks:-23
%season%wrong_one:-45 %shake:-17 %shift_it:93 %shift_it%staff:-14 %shift_it%wrong_one:-42 %smoke_smell:-49
%staff:-101 %staff%start_again:22 %staff%wrong_one:-22 %start_again:-28 %thanks:-63 %who:-92 %wrong_one:-31 @?:123
@after_visit:-151 @car:-52 @confirm:-1277 @confirm_stop:-52 @day:237 @day_:33 @later:-170 @nothing:-316
@odometer:-153 @offers:-299 @offers_:-141 @offers_the_th:-86 @reading:48 @time:374 @time_:20 @times:471 @walk_in:69
^_$:-196 ^_a:17 ^_about:-17 ^_after:-31 ^_afternoon:-40 ^_all:-45 ^_am:-35 ^_anda:-22 ^_antes:-17 ^_any:169
^_anytime:18 ^_apenas:19 ^_are:-59 ^_as:48 ^_ask:-27 ^_be:-17 ^_been:-24 ^_blue:-29 ^_call:-72 ^_can:-17 ^_cancel:-33
^_cant:-15 ^_car:-17 ^_changed:-14 ^_check:-29 ^_como:-15 ^_could:41 ^_cual:-73 ^_cualquier:97 ^_cuando:84
^_cuanto:-60 ^_day:23 ^_de:18 ^_depende:-59 ^_do:-94 ^_dont:21 ^_early:22 ^_el:-100 ^_en:26 ^_end:33 ^_entre:26
^_es:-35 ^_ese:29 ^_estan:-73 ^_este:31 ^_estoy:-28 ^_feliz:-16 ^_fine:-26 ^_friday:-103 ^_give:-50 ^_go:-19 ^_got:46
^_great:-16 ^_hableme:-44 ^_half:32 ^_hasta:-33 ^_have:27 ^_how:-35 ^_hoy:37 ^_i:27 ^_id:47 ^_ill:-14 ^_in:63
^_it:-47 ^_la:-125 ^_le:18 ^_lets:-34 ^_llamenme:-14 ^_lo:77 ^_make:57 ^_manana:20 ^_martes:24 ^_maybe:30 ^_mejor:31
^_miercoles:23 ^_might:16 ^_mon:20 ^_monday:29 ^_morning:-27 ^_mornings:24 ^_muy:-34 ^_my:58 ^_nada:25 ^_neither:30
^_nel:14 ^_never:-18 ^_new:-30 ^_next:129 ^_ninguna:47 ^_no:28 ^_none:76 ^_noon:31 ^_oh:-15 ^_ok:-36 ^_only:20
^_otra:15 ^_para:-52 ^_please:-27 ^_pm:-20 ^_por:-18 ^_prefiero:-14 ^_puede:-18 ^_que:-47 ^_quiero:16 ^_quisiera:18
^_quit:-14 ^_remind:-36 ^_sat:54 ^_saturday:36 ^_se:-33 ^_see:-17 ^_si:-36 ^_sold:25 ^_stop:-34 ^_sunday:55 ^_sure:28
^_take:-21 ^_that:-17 ^_the:-130 ^_this:59 ^_those:21 ^_thursday:-51 ^_tienen:-17 ^_tire:-14 ^_tmrw:20 ^_today:28
^_tomorrow:41 ^_trabajan:-50 ^_tues:73 ^_tuesday:34 ^_un:41 ^_una:47 ^_va:25 ^_viernes:18 ^_wait:-17 ^_want:15
^_we:-16 ^_wed:72 ^_weds:22 ^_what:-26 ^_whenever:131 ^_which:-37 ^_whichever:34 ^_who:-25 ^_will:-18 ^_works:-24
^_ya:-36 ^_yeah:30 ^_yes:38 ^_yo:19 ^_you:-25 a:79 a__battery:-14 a__de:25 a__first:-15 a__for:-20 a__hora:88
a__hour:-18 a__in:42 a__me:27 a__no:18 a__of:15 a__on:-16 a__or:-14 a__si:27 a__weeks:-27 a__y:21 a_call:-19
a_car:-15 a_couple:17 a_day:-20 a_esa:30 a_eso:19 a_few:-16 a_la:57 a_las:127 a_loaner:25 a_lunch:-40 a_mi:14
a_new:-18 a_que:-15 a_ring:-44 a_ser:-19 able:14 able_to:14 about:107 abren:-98 abren_$:-84 aceite:21 across:25
address:17 address_$:18 adelante:-15 afford:15 afford_it:15 after:109 after_$:94 after__drop:16 after__th:16
after_lunch:14 after_that:28 after_the:-20 after_work:34 after_you:14 afternoon:-40 afternoon_$:14 again:-30
again_in:-18 agosto:19 ahi:20 ahora:-14 ahora_no:-14 ahorita:-32 ahorita__puedo:-14 ahorita_no:-20 al:30 al__del:14
al__dia:25 al_otro:-17 al_salir:17 algo:109 alguien_me:16 all_day:-54 also:62 am:105 am_$:19 am_and:18 am_i:-18
am_y:28 an:145 an__change:25 an_appointment:31 an_hour:25 an_oil:22 and:169 and__are:-14 and__is:34 and__long:21
and__many:16 and__need:-34 and__would:14 and_can:28 and_how:41 and_i:-22 and_im:43 and_it:21 and_the:-21 and_wait:16
and_we:33 and_what:18 anda:-36 ando:25 ano:-24 antes:54 antes_$:-19 any:314 any__after:30 any__but:57 any__next:24
any__those:24 any_chance:21 any_day:135 any_more:-15 any_of:37 any_time:66 anything:83 anything_$:-22 anytime:20
april:47 april_$:18 apunteme:-27 are:-74 are_$:-20 are__and:15 are__on:23 are__there:-34 are_best:18 are_you:-68
are_your:-45 around:59 around_$:42 as:71 as__as:48 asap:412 asi:-16 asi_$:-14 asi_que:15 ask:-153 ask__again:-19
ask_me:-130 at:43 at_$:-15 at__it:35 at__the:16 at_and:42 at_if:23 at_instead:-40 at_my:20 at_noon:-36 at_on:19
at_or:-36 at_so:15 at_the:-17 at_work:-33 available:77 baby:-31 back__the:-14 back_by:29 bad:29 battery:-17 be:122
be_$:27 be__by:-16 be__in:-19 be_able:15 be_done:-29 be_the:27 be_there:15 because:-21 been:-35 been__to:-32
before:74 before__open:18 before_you:36 best_$:-19 better:52 better_$:55 between:21 between_and:22 bien_el:18
blue:-30 blue_$:-28 book:-15 both:-15 bout:54 box:20 brake:18 brakes_are:15 break:19 bring_it:14 btw:26 bump:-18
busy:-14 but:216 but__is:25 but__me:-24 but_how:-18 but_it:-24 but_monday:66 but_my:22 but_the:37 by:41 call:-61
call_me:27 cambiar:-21 cambiar_para:-16 cambiaron:-14 came:-34 came_up:-19 can:237 can__be:40 can__check:-15
can__come:25 can__do:116 can__drive:14 can__give:-14 can__it:49 can__make:-18 can__me:28 can__move:-16 can__send:-15
can__stop:29 can__wait:-16 can_come:20 can_do:24 can_it:30 can_we:-30 can_you:60 cancel:-50 cancel_my:-31
cant_make:-40 car:-26 carro:-22 cars:-16 chance:16 change_$:19 change_it:-14 check:-27 check__me:-33 check_with:-35
christmas:-30 christmas_$:-26 cierren:28 cierren_$:18 cita:15 cita_$:-33 cita__el:43 cita__favor:35 cita_del:-14
cita_para:47 cita_por:35 close_$:19 closed:19 closed_$:23 come_$:-17 come__friday:34 come__instead:-56 come_at:-49
come_in:36 come_thursday:28 comes:-36 como:21 como__las:25 como_a:41 como_en:-21 con:-47 con_el:-17 confirmed:16
confirmo:-49 cosa:-18 cost:18 could:107 could__be:18 could__do:57 could_do:15 could_it:17 could_you:46 couple:16
crack:22 cual:-77 cual__su:-52 cual_es:-55 cualquier:138 cualquier__menos:60 cualquier_dia:103 cuando:36
cuando__del:-14 cuando__el:-26 cuando_lo:-40 cuando_me:-14 cuantas:-14 cuanto_$:-15 cuanto__a:-24 cuanto_es:-15
cuanto_se:89 cuanto_va:-23 cuenta:14 da:42 da_igual:36 dan:-32 day:188 day_$:-31 day_after:56 day_but:47 day_for:-15
days:19 de:58 de__a:32 de__dos:-15 de__escuela:-14 de__hora:-16 de__la:-19 de__manana:-14 de__me:34 de__para:-16
de__semana:30 de__tarde:-18 de_abril:16 de_esas:30 de_eso:14 de_las:-47 de_los:23 de_manana:-38 de_mes:49 de_mi:30
de_noche:-17 de_regreso:14 de_un:-20 de_viaje:-17 deal:32 del:-51 del__el:-16 del_jueves:-59 del_trabajo:16 denme:-14
depende:-57 depends:-14 descanso:27 despues:31 despues_$:-20 despues__las:14 despues_del:26 dia:185 dia_$:26
dia__el:70 dia_de:19 dia_libre:14 dia_menos:82 dia_no:26 dias:25 did:-22 did_it:-14 diez:14 digo:-81 digo_$:-58
dime:-16 dio:15 do:103 do_$:14 do__at:-32 do__do:15 do__guys:-23 do__have:-31 do__open:-15 do__work:-30 do_any:27
do_friday:38 do_i:-15 do_instead:89 do_it:-25 do_me:18 do_the:14 do_you:-104 does:-26 does__need:16 does_that:-22
doesnt:-25 doing:-15 domingo_$:-26 done:-14 done_in:-29 dont:20 dont__a:15 dont__texts:16 dont_know:-14 dont_need:20
doors:46 dos:25 driving:-17 driving_$:-16 drop:71 drop__at:24 drop_box:19 drop_it:27 drop_me:19 drop_the:15
earlier:80 early:61 easter:-40 easter_$:-41 el:156 el_$:-14 el__al:19 el__de:14 el__despues:25 el__el:22 el__en:34
el__es:16 el__ese:-25 el__hasta:-17 el__me:16 el__mejor:20 el__pasado:-47 el__pero:24 el__por:29 el__puedo:42
el__que:39 el__sea:20 el__si:40 el__tempranito:25 el__temprano:23 el_ano:-14 el_carro:-40 el_de:-36 el_dia:19
el_jueves:73 el_lunes:112 el_martes:67 el_mes:-37 el_miercoles:35 el_mismo:-42 el_precio:-25 el_primero:19
el_proximo:17 el_sabado:134 el_verano:-19 else:20 en:22 en__de:26 en__del:-31 en__hora:14 en__manana:-33 en__tarde:48
en_cuanto:98 en_el:-52 en_la:28 en_las:-27 en_lugar:-19 en_marzo:-18 en_que:32 en_vez:-21 end:31 end_$:-20
end__the:46 end_of:51 ends:20 enero:-21 enero_$:-19 engine:23 entonces:19 entrante:21 entrante_$:21 entre:58
entre_semana:27 entre_y:14 era:-30 es:-126 es_$:-31 es__de:-17 es__horario:-52 es__que:-27 es_de:-22 es_mi:51
es_su:-52 esa_hora:24 esas:87 esas_horas:22 ese:23 ese_$:-23 ese__no:34 ese_carro:-14 ese_dia:60 eso:29 eso_$:-23
eso_de:26 esos:73 espacio:58 espacio_$:42 espera:-15 esperar:-21 esperar_$:-22 esquina:19 esta:-61 esta_semana:-19
estan:-67 estan_$:22 este:31 este_mes:-24 estoy:30 evening:27 every:-39 every_morning:-19 except:24 fast:-17
favor_$:-25 fecha:20 feliz:-16 few:-17 figure:16 filled:-18 fin:64 fin_de:37 fine:-17 fine_$:-34 first:41
first_thing:30 fit:41 flush:15 for:93 for__oil:34 for_an:63 for_me:87 for_that:-25 for_thursday:-16 forgot:-15
free:32 freno:-16 fri:51 friday:81 friday_$:82 friday_afternoon:-65 friday_and:-27 friday_at:27 friday_but:53
friday_instead:31 friday_is:-48 friday_morning:31 fridays:41 from:78 get:19 get_it:-20 getting:22 give:-69
give__a:-70 give_me:-69 go:-28 go__friday:-39 go_with:-35 going:43 going_to:41 good:37 good_$:-24 got:204 got_$:79
got__wrong:-20 got_a:72 got_anything:54 got_it:-21 got_the:-21 great:-36 great_$:-14 grinding:29 guy:-50 guys:-57
guys_$:-17 guys_open:-20 hableme:-32 habra:42 hacer:-18 half:31 has:71 has_the:20 hasta:-64 hasta__hora:-27
hasta__no:-15 hasta_que:-43 have:60 have__call:15 have_a:45 have_an:41 have_never:-15 have_someone:14 hay:55 hijo:-26
hold:-15 home:31 home_$:18 hora:56 hora_$:17 hora_abren:-19 hora_estan:-18 hora_que:81 horario:-83 hour:41 hour_$:-22
hours:-69 hours_$:-45 hours__you:15 hours_is:16 how:52 how__are:-28 how__can:-18 how__hours:29 how__would:-18
how_about:62 how_bout:54 how_is:20 how_late:-27 how_long:-14 how_many:33 how_much:-14 hoy:31 hoy_$:-34 hoy__la:23
hoy__si:17 hoy_en:25 hoy_mismo:47 humo:-53 hundred:-32 hundred_$:-22 i:-61 i__a:-28 i__an:18 i__at:-71 i__be:22
i__by:34 i__in:51 i__it:17 i__never:-15 i__smoking:16 i__stop:-17 i__to:-48 i__you:-37 i_be:-18 i_can:30 i_cant:33
i_do:15 i_get:-17 i_leave:15 i_need:18 i_quit:18 i_said:-18 i_stop:27 i_work:22 i_would:-26 id:64 idea:-33 idk:-37
if:57 if__can:19 if__is:26 if_i:-27 if_that:20 if_you:33 igual:30 ill:73 ill__by:16 ill__there:29 ill_be:14
ill_stop:30 ill_take:-22 ill_wait:46 im:91 im__the:36 im__to:18 im_driving:-15 im_free:16 im_going:18 im_good:-22
im_not:-24 im_retired:47 in:87 in_$:48 in__day:-25 in__drop:21 in__morning:-25 in__the:20 in__weeks:20 in_an:-19
in_friday:54 in_the:-62 in_tomorrow:21 in_two:33 in_your:35 ingles:16 instead:47 instead_$:59 instead_of:-16 is:57
is_$:-58 is__a:-22 is__about:-16 is__address:22 is__an:-28 is__at:55 is__but:31 is__cost:16 is__for:16 is__ok:17
is__only:22 is__open:33 is__really:21 is__the:-48 is_better:-73 is_fine:38 is_friday:24 is_in:-29 is_it:-23 is_ok:38
is_on:-25 is_shaking:32 is_the:-60 is_there:56 is_this:-37 is_your:25 ish:34 ish_$:22 it:-58 it_$:-69 it__all:-21
it__and:40 it__at:-33 it__by:30 it__done:-25 it__finished:16 it__friday:42 it__got:17 it__in:-36 it__is:17
it__long:16 it__next:-21 it__ok:26 it__on:-27 it__you:22 it_a:-16 it_an:-19 it_and:43 it_back:25 it_be:49 it_cost:27
it_done:20 it_friday:26 it_in:37 it_myself:-18 it_need:16 it_now:14 it_to:-46 it_up:17 jaja:27 jaja_$:23 jajaja:-22
job:26 juego:-14 jueves:68 jueves_$:-79 jueves__a:64 jueves__la:44 jueves__las:-22 jueves__viernes:15 jueves_a:-22
jueves_en:24 jueves_o:20 jueves_pero:66 just:-25 just__in:19 k:19 keys__the:16 keys_in:16 kid:14 kids:55 knocking:14
know:-20 la:78 la_$:-33 la__antes:28 la__cuando:-16 la__de:39 la__el:39 la__en:-23 la__las:-36 la__no:20
la__pasar:-15 la__que:89 la__semana:20 la_cita:-38 la_cuenta:14 la_de:-59 la_del:-33 la_hora:90 la_manana:-14
la_proxima:16 la_semana:48 la_tarde:66 labor:-31 labor_day:-29 las:66 las_$:-54 las__me:21 las__que:17 las__y:37
las_de:-19 las_llantas:20 las_mil:-23 las_no:19 las_que:15 las_y:23 late:-26 late__you:-27 late_are:-25 later:61
le:-114 le__un:27 le_digo:-57 le_sale:-60 left:21 les:-27 let:-39 let_me:-24 lets:-22 libre:51 libre_$:36 like:107
like_$:83 line_$:15 llantas:17 llego:32 llego_$:27 llegue:-22 lo:-117 lo__a:-35 lo__de:-16 lo__el:-30 lo__en:-68
lo__para:27 lo__pronto:74 lo_dan:-21 lo_dejo:-41 lo_llevo:-38 lo_mas:95 loaner:21 lol:25 lol_$:-14 long_$:29
look_like:15 los:21 los__en:16 luego:-26 lugar:32 lugar_$:45 lunch:-35 lunes:122 lunes_$:17 lunes__martes:15
lunes_a:29 lunes_o:15 make:15 make_it:49 make_that:19 manana:82 manana_$:-16 manana__la:33 manana__las:47
manana__me:-16 manana_a:44 manana_temprano:22 mandan:-17 many:27 many__is:24 many_hours:29 martes:101 martes_$:47
martes__la:29 martes__las:27 martes_a:27 martes_en:22 martes_pero:-52 mas:125 mas__como:22 mas__el:17 mas__que:25
mas_pronto:74 mas_temprano:-26 maybe:83 maybe_$:20 maybe_in:-15 maybe_next:58 me:-90 me_$:65 me__a:19 me__al:18
me__dan:-21 me__el:67 me__en:-17 me__igual:36 me__im:-23 me__la:23 me__my:17 me__no:15 me__ride:18 me__ring:-45
me__the:-26 me__we:16 me__week:-129 me_a:-73 me_after:-63 me_again:-24 me_at:15 me_back:16 me_da:47 me_in:-38
me_lo:-14 me_next:-112 me_then:-16 me_to:-25 me_today:14 me_urge:20 me_what:16 media:20 media_$:20 medio:41
medio_dia:43 mejor:36 mejor__lunes:28 mejor_el:46 mejor_no:-18 menos:96 menos__lunes:46 menos_el:55 mensaje:-16
mensajes:-14 mes_$:23 mes_pasado:-34 message:-16 mi:39 mi_$:-15 mi_cita:-27 mi_hijo:-26 mi_turno:23 miercoles:82
miercoles_por:26 might:16 mil:-27 mil_$:-23 min:-23 mind:-24 mine:-19 mis:-26 mismo:44 mismo_dia:-17 mismo_le:14
mon:31 monday:122 monday_$:-56 monday__be:47 monday__th:24 monday_at:36 monday_but:27 monday_morning:-37
monday_the:24 month:23 month_$:17 more:-22 mornin:14 morning:-58 morning_$:-52 morning_and:26 mornings:71 move:-53
move__to:-28 move_it:-19 move_me:-18 moving:-19 much:-23 much_would:-16 muy:-25 my:47 my__are:20 my__changed:25
my__got:14 my__is:-14 my__on:25 my_calendar:23 my_job:16 my_kid:17 my_nephew:-15 my_number:29 my_shift:24
my_thursday:-20 my_tires:15 myself:-25 nada_$:-22 nada_de:17 nd:56 near:-18 near_the:-18 necesito:45 necesito_que:21
need:59 need__appointment:23 need__back:32 need_a:20 need_it:21 need_to:-25 needed:-31 neither:30 nel:14 nephew:-15
never:-55 new:-105 new__on:-27 new_battery:-14 new_tires:-37 new_year:-18 next:183 next_week:17 ni__ni:23 night_$:-30
nine:45 ningun:-28 ninguna:41 ninguno:18 no:23 no_$:-118 no__all:14 no__do:33 no__el:-20 no__en:17 no__good:-17
no__hoy:30 no__is:-15 no__nada:-15 no__otro:19 no__para:101 no__que:-19 no_but:-45 no_can:33 no_el:96 no_good:36
no_hay:32 no_i:-20 no_idea:-31 no_im:-20 no_le:17 no_lo:-16 no_need:-22 no_puedo:-26 no_quiere:-20 no_quiero:-22
no_se:-49 no_tengo:-19 no_tiene:97 no_trabajo:21 no_voy:-43 no_wait:14 no_what:-15 nobody:-15 nomas:23 none:75
none__those:35 none_of:35 noon:45 noon_$:22 not:-41 not__the:-21 not__yet:-19 not_before:26 not_now:-24 not_sure:-21
now:-16 now_$:-16 nuevo:-17 nuevo_$:-21 number_$:-18 o:18 o_el:15 o_viernes:19 oclock:-16 oclock_$:-28 of:66
of__month:41 of_the:53 of_them:33 of_those:45 off:44 off_$:25 office:18 office_$:21 oh:-15 oil:-27 oil_change:20
ok:16 on:56 on_$:20 on__th:33 on_a:-33 on_friday:61 on_it:35 on_saturday:-34 on_sunday:-21 on_the:48 on_thursday:31
one:-97 one_$:-105 one__the:21 one_please:-25 ones:-17 only:52 open:-27 open_$:111 opening:63 or:-43 or_$:-52
or__i:-18 or_anything:-14 or_so:-14 or_thurs:14 or_tues:20 otra_vez:-19 otro_dia:22 out:-75 out_in:-15 over_$:18
oye:-19 para:99 para__de:35 para__lo:-39 para_cuando:25 para_el:26 para_la:44 para_que:-45 para_un:15 para_ver:-17
parar:19 pasado_$:-28 pasado_manana:35 paso:22 paso_manana:21 passed:-14 past:15 pedal:-27 pero:113 pero__las:66
pero_a:78 pero_el:27 pero_le:-62 pick:57 pick__up:18 pick_it:18 please__me:-14 please_call:15 pm:54 podemos:-15
podria:32 podria__el:23 podria_ser:18 poquito:36 por__la:38 por__manana:36 por__tarde:47 por_ahi:16 por_el:-19
por_favor:-16 por_la:89 por_las:-25 porque:43 posible:131 posible_$:126 possible:61 possible_$:68 precio:-28
precio_$:-25 prefiero:-14 prender:-14 primera:24 primera_hora:14 pronto:66 proxima:16 proxima_semana:17 proximo:16
pueda:98 puedan:78 puede:24 puede_$:63 puede__el:22 puede_ser:-17 puedo:78 puedo__la:16 puedo__manana:15 puedo_el:28
pull:17 puse:-15 push:-18 push__to:-14 push_it:-15 put_new:-15 quarter:15 quarter_to:15 que:19 que_$:-24
que__abren:-25 que__de:17 que__el:28 que__la:-21 que__me:20 que__por:26 que__trabajo:21 que_alguien:14 que_cierren:28
que_el:-17 que_hora:-59 que_me:28 que_no:26 que_tal:36 que_tan:-19 que_ya:16 queda:-48 queda_$:-16 quedan:21
quien:-18 quien_es:-14 quiero:-17 quisiera:25 quit:22 quit__so:16 quit_smoking:16 rd:56 really:32 remind:-33
remind__in:-36 remind_me:-33 retired:47 ride:20 ride_$:15 ride_to:-18 right:43 right__the:19 ring:-36 rotated:15
rotation:18 run:39 run_me:25 sabado:169 sabado_$:44 sabado__las:38 sabado_a:37 said:-29 said_stop:-17 sala:-16
sale:-42 sale_$:19 sale_humo:-62 salga:-14 saliendo:58 saliendo_de:27 saliendo_del:17 salio:-15 same:-28 same_day:-28
same_time:-21 sat:116 saturday:115 saturday_morning:28 saturdays:-39 saturdays_$:-41 say__th:18 say_the:18 says:-14
schedule:-31 school:37 se:70 se_lo:-32 se_oye:-16 se_puede:58 se_tardan:-16 sedan:14 see:-15 see_you:-26 semana:95
semana_$:54 semana_de:37 send:-20 ser:-17 ser_el:22 set:-28 shakes:-57 shaking:37 shes:-15 shop:-38 shop_$:-38
should:-26 should_i:-21 si:92 si__dejo:-16 si__el:17 si__jueves:-32 si__llevo:-23 si__martes:-49 si__puede:16
si_dios:14 si_el:-51 si_gracias:31 si_hay:30 si_lo:-42 si_me:26 si_puedo:21 si_se:16 siempre:-15 sigue:-22 siguen:-19
sin:-21 sit:18 slot:-30 slow:21 smoking:16 smoking__i:16 smoking_so:16 so:76 so_$:-14 so__can:22 so__is:-16
so_friday:17 so_i:33 sold:37 someone:28 something__up:-19 something_came:-19 sometime:16 soon_as:25 sooner:65
sooner__better:38 sooner_the:38 soonest:82 sorry:15 sounds:-27 soy:24 squeeze:45 squeeze__in:45 squeeze_me:45 st:40
stop_$:-40 stop__me:-18 stop_by:39 stop_in:27 street:29 street__you:18 street_are:18 su:-63 su_horario:-52 sunday:-22
sunday_$:-100 sunday_or:43 swapped:-23 switch:-59 switch_me:-16 take_$:-15 take_the:-30 tal:30 tan:-25 tardan:-16
tarde_$:-23 te:-24 te_digo:-26 tell:-15 tell_you:-14 tempranito:23 tempranito_$:19 temprano:17 temprano_$:-19 ten:25
ten_$:19 tendra:67 tengan:136 tengo__el:26 tengo_que:-29 text:-57 texting:-18 texting_me:-14 th:158 th_$:-50
th__the:23 th_at:26 th_so:40 than:-20 thank:-19 thank_you:-18 thanks:-20 thanks_$:-18 thanksgiving:23
thanksgiving_$:23 that:18 that__my:16 that__the:33 that_day:99 the:127 the_$:-24 the__after:70 the__and:-20
the__ask:-18 the__at:19 the__box:17 the__for:-26 the__friday:16 the__going:15 the__guy:-33 the__in:25 the__is:16
the__line:16 the__on:-22 the__one:-77 the__or:51 the__so:38 the__the:104 the__thing:-34 the__thursday:14 the_am:-36
the_better:99 the_doors:46 the_drop:17 the_earlier:60 the_friday:-109 the_kids:29 the_last:17 the_month:47
the_morning:-36 the_nd:57 the_new:-19 the_next:44 the_only:25 the_pm:-16 the_rd:25 the_sedan:14 the_street:19
the_th:156 the_thing:-25 the_thursday:-23 the_truck:24 the_wait:-16 the_week:32 the_wrong:-35 then:68 then_$:35
there:22 there_on:-43 thing:-83 thing_$:-72 think:-15 third:-33 thirty:21 thirty_$:20 this__the:-39 this_about:-16
this_afternoon:19 this_friday:15 this_is:-42 this_month:-16 those:92 those_$:-16 thousand:-18 thousand__hundred:-16
thurs:91 thurs_$:-21 thursday:36 thursday__work:16 thursday_and:16 thursday_at:16 thursday_please:-15 thursdays:-31
tiene:94 tienen_$:43 tienen__de:-31 till:-67 time:24 time_$:-33 time_next:15 times:16 tio:-14 tipo:24 tires:-17
tires__on:-24 tmrw:16 to:-82 to__in:32 to__it:15 to__my:24 to_call:-19 to_come:-17 to_friday:-25 to_get:41 to_look:15
to_monday:-56 to_move:-14 to_next:-25 to_pick:17 to_the:-17 to_wait:17 todavia:-25 todavia_no:-16 today:23
today_$:-46 todo:-38 todo_$:-14 todo__dia:-15 told:-18 tomorrow:77 tomorrow_$:-30 tomorrow_at:28 too:-34 too_$:-15
too_early:14 trabajan:-67 trabajo:65 trabajo_$:50 trae:27 trae_$:19 tres:21 truck:30 try:-150 try__in:-22 try_me:-149
tu:-15 tues:70 tues_$:27 tuesday:59 tuesday__is:-25 turno:24 turns:-16 two:21 two_weeks:39 ultima:23 un:77 un__de:26
un__el:15 un_carro:26 un_dia:-31 un_poquito:17 una:29 una_cita:50 unos:-43 up_$:15 up_with:15 urge:23 urgent:-14
urgente:-28 use:-14 used:-16 usted:15 ustedes:46 va__ser:-19 va_a:-42 va_el:14 vacaciones:24 vemos:-14 verano:-19
vez:-51 viaje:-23 viernes:56 viernes_$:-42 viernes__a:16 viernes__de:15 viernes__la:37 viernes__las:-75 viernes_a:-53
viernes_pero:29 voy:-50 voy_a:-37 voy_saliendo:14 wait_$:19 wait__it:21 wait_there:15 waiting:-15 want:21 want_to:16
was:-38 way:-15 we:-27 we__a:21 we__instead:67 we__it:-56 we__that:-15 we_do:23 we_have:22 we_make:-17 we_move:-16
wed:123 wed_$:27 wed_at:51 wednesday:57 wednesdays:14 weds:28 week:93 week_$:37 week_of:23 weekend:54 weekend_$:45
weeks:-33 weeks_$:-18 went:-31 were:-21 what_$:-28 what__are:15 what__it:32 what__the:24 what__your:-19
what_about:103 what_are:-49 what_do:-18 what_i:-35 what_street:14 what_time:-22 what_will:28 whatever:19 when_you:30
whenever:110 whichever:45 who:-37 whole:-19 whole_thing:-14 wifi:-31 wifi_$:-30 will:29 will__it:18 will__take:25
will_do:-20 will_it:46 wiper:30 with:-41 with_me:-36 with_the:34 wobbles:15 wont__able:15 work:36 work_$:51
work__me:-18 works_$:-25 would__be:-22 would_be:46 would_i:-16 wrong:-44 wrong_guy:-20 y:114 y__para:27 y__que:-20
y__quedo:15 y__va:-16 y_en:35 y_eso:-20 y_media:18 y_para:-17 y_si:21 ya:-56 ya_casi:16 ya_lo:-17 ya_me:18 ya_no:-60
yeah:19 year:-19 yes_$:-50 yes__i:-21 yes__works:-44 yes_but:-19 yes_monday:19 yet:-82 yet_$:-17 yo:51 you:102
you__a:-16 you__anything:18 you__im:44 you__it:-49 you__me:24 you__my:-31 you__on:-72 you__the:31 you__what:-28
you_can:63 you_check:-16 you_close:22 you_do:139 you_got:82 you_guys:-56 you_have:36 you_on:22 you_pick:45
you_send:-15 you_there:-41 you_tomorrow:-18 you_work:-30 your:15 your__for:24 your__hours:-41 your_address:21
"""
