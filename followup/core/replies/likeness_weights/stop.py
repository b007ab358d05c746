"""What speaks for and against `stop`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "stop"
BIAS = -144
WEIGHTS = """\
#abaj:59 #abin:-32 #abla:-67 #able:-47 #abou:-76 #acab:-45 #acar:-89 #acce:-51 #acci:-30 #acco:29 #acio:-51 #acor:-31
#acte:40 #acti:-113 #acto:67 #adel:-33 #adie:-30 #ador:-30 #ados:-70 #afir:33 #afue:-46 #agai:40 #agan:71 #ages:57
#agin:87 #agre:35 #ahor:-37 #ajes:73 #ajit:83 #aken:80 #alca:-34 #alen:-37 #algo:38 #alig:-73 #alin:-34 #alir:60
#alke:-51 #allo:-46 #ally:-73 #alon:56 #alre:45 #also:44 #alto:68 #amab:29 #amam:-27 #amas:42 #amil:27 #amos:-36
#ampa:34 #anag:35 #anan:-39 #anas:33 #anda:45 #andi:-48 #ando:45 #anej:-32 #ange:-60 #aniz:-49 #anme:34 #anno:-75
#anol:35 #anot:68 #anse:43 #anta:-49 #ante:46 #anym:29 #anyt:56 #anyw:33 #apag:27 #appo:-32 #aque:37 #aqui:96
#aran:55 #arar:74 #aras:32 #arde:-33 #arel:-74 #aren:72 #arin:29 #arlo:-44 #arly:-79 #arme:56 #arqu:-58 #arre:-32
#arro:29 #arta:41 #arte:37 #arto:-54 #asia:-56 #asie:-42 #aske:29 #aski:46 #asta:52 #asur:33 #atel:-57 #atev:33
#atie:-28 #atin:-81 #atio:44 #ator:-51 #atos:69 #augh:38 #auto:40 #aven:-33 #avia:35 #avis:-34 #avor:87 #away:58
#ayar:27 #ayin:68 #ayor:72 #ayud:-29 #baby:-39 #bach:-33 #back:-58 #baja:89 #bajo:47 #bame:-50 #bare:-74 #base:90
#bast:31 #befo:-64 #bein:47 #bien:-91 #birm:-88 #blam:-33 #blem:34 #bloc:-29 #bloq:69 #blow:119 #boar:-34 #book:-35
#borr:233 #bout:-76 #brak:33 #bulb:-27 #busc:34 #busy:-75 #bvio:31 #cabi:-32 #cabo:-35 #cada:-31 #cado:32 #call:-116
#came:140 #camp:40 #cant:-70 #care:-61 #carl:-36 #cars:27 #cart:38 #caug:32 #ccep:-33 #ccid:-30 #ccio:38 #ccou:29
#ceas:58 #cela:102 #cele:-60 #cell:32 #celo:-73 #celu:30 #cepc:-31 #cept:-56 #cerc:-30 #cero:102 #chen:78 #chev:-28
#choc:-54 #choo:-30 #chos:-91 #cias:36 #cibi:56 #cide:-31 #cien:35 #cios:42 #cita:-105 #cito:29 #cked:-71 #ckin:28
#clea:63 #coff:-40 #colg:-30 #comi:-45 #como:-90 #conf:-35 #cono:29 #cont:135 #conv:-32 #cord:52 #cost:40 #covi:-41
#crap:70 #cras:-30 #crib:153 #cros:-84 #cten:52 #ctio:-38 #ctiv:-50 #cuan:36 #cuer:-37 #cuna:37 #cupa:35 #dado:-33
#darl:55 #davi:35 #dawn:-37 #deci:-28 #dedo:-34 #deed:42 #deje:-56 #dela:-35 #delo:-41 #dema:-66 #denm:-28 #dent:-53
#desa:88 #desp:33 #dici:63 #died:-46 #dies:-36 #diga:-50 #digo:29 #dije:56 #dine:-40 #dire:-84 #disc:69 #disp:-47
#dist:-32 #ditc:37 #does:-90 #domi:-42 #done:74 #doub:-27 #down:-27 #draw:48 #drop:60 #dule:-46 #duri:-42 #eact:-58
#eads:-30 #eand:59 #eant:-50 #eari:29 #earl:-80 #ease:54 #easi:-41 #eati:-37 #eave:-109 #ecep:-39 #eces:29 #ecib:54
#ecio:-33 #ecti:63 #ecto:-48 #ecue:-37 #eden:-36 #edes:40 #edul:-46 #efon:34 #efor:-64 #egan:-64 #egat:-57 #egle:-32
#egre:-68 #egue:29 #egui:-42 #eing:47 #eith:-53 #ejam:51 #ejan:-55 #ejen:90 #ejor:42 #elan:-35 #elar:124 #elef:34
#elen:-72 #elep:-42 #elie:46 #elim:82 #else:93 #elta:-50 #elul:30 #elva:60 #emai:-40 #eman:-29 #emas:-67 #emen:76
#emer:85 #emov:91 #empr:-71 #enci:45 #enda:-31 #ende:-85 #endi:33 #ends:-61 #enen:28 #enga:88 #engl:27 #engo:-52
#enle:119 #enlo:-78 #enme:202 #enos:-106 #ensa:58 #ente:39 #enti:37 #envi:92 #eone:-49 #eopl:29 #epai:37 #epci:-31
#ephe:48 #epho:-42 #eply:29 #epor:92 #eque:58 #erab:-34 #erca:-30 #erda:-33 #erde:-37 #erdo:-30 #ered:-47 #erer:-68
#eres:53 #erfe:-41 #erge:85 #ermi:96 #erne:-75 #eron:-34 #erso:46 #erva:-61 #erve:45 #esad:75 #esda:-33 #esen:55
#eser:-61 #esim:28 #esnt:-37 #espo:-27 #essa:37 #esse:49 #este:125 #esti:-30 #esto:59 #estu:52 #esub:-84 #eten:132
#etes:63 #etir:100 #etti:47 #evad:-33 #evam:-31 #evan:158 #ever:159 #evok:150 #ewhe:-34 #exac:43 #exte:185 #exti:77
#exto:46 #exts:-30 #fami:27 #fast:45 #favo:87 #feel:-35 #ffee:-40 #filt:-61 #fixe:44 #flat:-30 #flic:-38 #foll:182
#fono:34 #fore:-71 #fort:-47 #four:-35 #fren:-51 #frie:-49 #from:91 #furt:149 #gado:-31 #gain:40 #gale:37 #gand:34
#ganm:-55 #gati:-57 #genc:80 #gent:-43 #gett:47 #ging:87 #girl:-51 #gits:28 #glis:27 #gned:27 #gnme:-72 #goin:-54
#gone:41 #good:-30 #gran:-47 #gree:53 #gret:-65 #grin:45 #gros:-29 #guen:38 #gust:-184 #habl:-106 #hago:-77 #hake:47
#hand:-31 #hang:-31 #hast:29 #have:-50 #hdra:48 #head:-71 #hear:46 #heck:-27 #hedu:-46 #here:27 #hers:-49 #hese:121
#heve:-28 #hijo:30 #hile:40 #hink:59 #hitc:54 #hoca:-55 #hold:-126 #homb:37 #hone:50 #hool:-30 #hora:-78 #houg:33
#hour:30 #hout:-47 #huts:-27 #iado:-59 #ibam:-50 #ibed:-33 #iben:-54 #ibir:117 #ible:-43 #ibra:-36 #icat:40 #icie:60
#icio:27 #icos:58 #idad:-34 #idea:49 #idel:-37 #iden:97 #iend:-37 #iene:-43 #iern:-74 #iero:28 #ieto:-29 #igan:-88
#igne:27 #ignm:-72 #illa:-27 #ilte:-58 #imer:-34 #imes:137 #imie:58 #imin:82 #inat:-32 #inco:-46 #indi:34 #inen:41
#iner:-40 #info:84 #ingo:-43 #ings:-64 #inst:-77 #into:-82 #inue:37 #iona:-31 #ione:42 #ioni:-32 #ions:58 #ious:93
#iper:-99 #ippe:-46 #ires:-37 #irme:-110 #irve:-73 #isco:82 #isnt:-125 #issi:69 #isti:-36 #isto:-29 #itch:74
#ited:-33 #ithd:48 #ithe:-53 #itho:-48 #itos:54 #iven:-138 #ivoc:29 #ivoq:-47 #ixed:43 #jaja:-50 #jale:29 #jama:41
#jame:51 #jenl:-72 #jenm:101 #jito:84 #join:33 #jove:43 #juic:-31 #june:-34 #junk:45 #jury:-48 #just:-127 #keep:-174
#kill:110 #knoc:-64 #know:-83 #laid:-36 #lame:-95 #lant:-79 #lash:-30 #lata:68 #late:-39 #lati:61 #lcan:-34 #ldnt:-57
#lear:64 #leas:44 #leav:-119 #lefo:34 #lega:-62 #legu:30 #leme:42 #lene:55 #lenm:-34 #lent:-28 #leph:-42 #less:-48
#lest:61 #leva:-27 #ligh:-30 #lign:-73 #like:-58 #limi:88 #line:-70 #lish:27 #list:43 #live:34 #lked:-51 #llam:-64
#llan:-46 #lled:-31 #lleg:-41 #llev:-30 #llow:147 #loca:-60 #lock:-27 #loco:40 #lone:61 #long:82 #loqu:69 #lost:-27
#love:37 #lowi:-27 #lrea:45 #lses:71 #lsew:-58 #lter:-58 #ltos:-27 #lula:30 #lune:28 #lver:-59 #lvid:54 #mabl:29
#made:50 #mail:-38 #make:-89 #malo:-33 #mame:-27 #mana:-39 #mand:-46 #mane:-32 #marq:-58 #masi:-56 #matt:30 #mayo:51
#mber:65 #mbre:-59 #mean:-42 #mejo:42 #menm:-68 #meno:-55 #mens:58 #ment:50 #meon:-49 #merg:85 #mero:48 #mess:42
#mien:48 #mijo:47 #mily:32 #mind:-51 #mine:34 #ming:-86 #mins:-30 #minu:-36 #miss:46 #mist:-74 #mite:-34 #mmer:28
#mmit:-33 #moki:-60 #mole:61 #more:169 #move:99 #mpar:-54 #mpra:-82 #mput:41 #much:-90 #muev:136 #muni:53 #mush:39
#mute:397 #nada:76 #nado:36 #name:-34 #nana:-40 #nate:-46 #ncan:-32 #ncia:-27 #ncie:83 #ncio:37 #ncom:-33 #ndan:-32
#nday:-27 #nded:-80 #ndee:42 #nden:109 #ndin:39 #nega:-57 #neit:-52 #neph:48 #next:30 #nfor:-32 #ngan:96 #nged:-42
#nger:32 #nges:-38 #ngin:36 #ngli:27 #nica:53 #niet:-29 #nigh:-43 #nked:46 #nlos:-58 #nmen:-72 #nnoy:-75 #noch:-120
#nock:-64 #noma:-42 #nomb:-83 #nori:28 #norm:74 #noth:45 #noti:52 #noyi:-54 #nozc:52 #nsaj:58 #nsan:-35 #nsar:31
#nsen:47 #nsta:-76 #nsub:65 #ntac:112 #ntas:-41 #nted:77 #nten:-57 #ntin:40 #ntry:62 #nuda:-75 #nuev:-199 #numb:77
#nume:75 #nunc:65 #nvie:81 #nymo:29 #nyth:56 #nywa:33 #oard:-34 #obar:31 #obvi:31 #ocad:29 #ocat:-56 #oche:-120
#ocke:-101 #ocks:-52 #ocup:39 #odav:35 #oder:40 #oesn:-37 #offe:-42 #oice:-38 #oing:-30 #oint:30 #okin:-52 #oles:60
#ollo:171 #olve:-58 #olvi:52 #omas:-42 #ombr:-46 #omeo:-49 #omin:-87 #ommi:-33 #ompa:-40 #ompu:36 #once:-84 #oner:-66
#ones:34 #onge:53 #onis:-32 #onoz:52 #onse:41 #onta:102 #onti:36 #opal:93 #ople:29 #opte:65 #opti:53 #opto:109
#orci:30 #orda:-79 #orio:-48 #oriz:100 #orke:42 #orks:-31 #orma:90 #orqu:37 #orra:69 #orre:157 #orry:-92 #orst:34
#orte:97 #orti:-27 #osas:49 #oser:-29 #osse:-49 #osts:39 #othe:-44 #otif:29 #otra:-62 #oubl:-27 #ould:-33 #oure:61
#ousl:44 #oved:-33 #over:-65 #ovid:-40 #owin:-28 #oyin:-54 #ozco:52 #pads:-34 #paga:57 #paid:39 #pall:116 #pana:32
#pano:35 #para:54 #pare:89 #pcio:-31 #pect:-27 #pedi:50 #pena:34 #peop:29 #pera:-53 #perd:-33 #perf:-41 #perm:98
#pero:-97 #pers:-32 #pesi:28 #pest:-29 #pete:72 #phew:48 #phon:58 #pido:75 #play:-49 #plea:63 #plic:-29 #pone:-62
#porq:27 #port:109 #pped:-55 #ppoi:-32 #pran:-82 #pray:41 #pres:-35 #pret:-44 #prim:-33 #proc:-30 #prom:78 #prop:66
#ptou:109 #pued:-53 #pull:64 #puse:-37 #pute:59 #quea:51 #qued:-35 #quem:-54 #quen:53 #quer:-65 #ques:55 #quit:58
#rake:33 #rale:71 #rame:72 #rand:-59 #rano:-85 #rapy:77 #rara:45 #rase:37 #rass:32 #rast:-31 #raya:27 #rdar:-43
#rdat:-49 #rday:-37 #rden:-51 #rdon:-29 #reac:-58 #reat:-41 #rece:-27 #reci:37 #reck:39 #reco:-27 #recu:-52 #reem:-31
#regl:-31 #regr:-68 #rein:-77 #rela:55 #rely:-74 #remo:87 #renl:111 #reno:-51 #repa:36 #repo:94 #rese:-83 #resp:-30
#resu:-86 #reti:100 #revo:188 #rfec:-41 #rgan:-49 #rgen:84 #riba:57 #ribe:102 #rien:-51 #righ:82 #rike:78 #rime:-34
#rind:45 #ring:-28 #rios:-44 #ripp:-46 #rite:-32 #riti:-29 #rked:39 #rmal:74 #rmat:35 #rmis:102 #rnes:-74 #robo:30
#romo:85 #rong:-55 #rose:-30 #ross:-84 #rram:72 #rrar:-27 #rreg:-31 #rren:66 #rryi:-46 #rson:46 #rted:81 #rthe:149
#rven:-73 #ryin:-46 #saca:83 #sado:56 #sage:-49 #sagi:87 #said:60 #saji:84 #sale:-34 #sali:38 #saqu:37 #sayi:67
#sche:-46 #scho:-30 #scon:85 #scra:87 #scri:167 #sday:-50 #seat:31 #segu:-55 #sema:-29 #send:121 #seni:-27 #sens:-40
#sera:-30 #serv:-63 #sewh:-58 #shak:49 #ship:63 #shut:-31 #siad:-56 #siga:-36 #simo:36 #sion:55 #sirv:-73 #sist:38
#sked:29 #skin:46 #smok:-65 #some:-30 #sona:65 #sorr:-47 #spam:93 #sper:-38 #spon:-72 #ssag:39 #ssio:58 #stad:34
#stak:-74 #stan:51 #star:-47 #stas:49 #stat:-53 #stay:-45 #stea:42 #stee:33 #stem:79 #sten:111 #ster:-109 #stid:44
#stin:-67 #stop:144 #stos:37 #stri:67 #stuv:52 #sual:-56 #summ:28 #susc:111 #susp:43 #syst:38 #taba:39 #tach:55
#tact:113 #take:117 #talk:-47 #tand:51 #tara:38 #tard:-41 #taro:55 #tart:-27 #tate:-54 #team:41 #tean:60 #tede:40
#teen:104 #tell:-65 #tema:41 #temp:-81 #tend:-38 #teng:48 #tenm:155 #tent:-28 #ters:39 #teve:34 #text:212 #than:-95
#that:-33 #thdr:48 #ther:68 #thes:86 #they:-83 #this:86 #tica:-35 #tidi:44 #tien:50 #time:47 #timi:59 #tina:-31
#ting:-74 #tire:-54 #tiro:49 #tito:-27 #tive:-81 #tmen:-55 #toca:-42 #todo:45 #topa:93 #tops:-61 #tori:52 #tout:109
#trab:63 #trac:-40 #trik:78 #trip:36 #ttin:63 #tues:-35 #ture:-31 #tuvo:52 #twis:-35 #type:-31 #uall:-57 #uand:37
#uble:-27 #udar:-74 #uear:44 #uede:-29 #uedo:-47 #uelt:-50 #uelv:39 #ueme:-48 #uenm:28 #uerd:-37 #uere:-81 #uesd:-34
#ueva:75 #uevo:-128 #ught:75 #uido:-35 #uien:-67 #uier:71 #uita:31 #ular:29 #uldn:-57 #umbe:77 #umer:75 #umme:28
#unad:37 #unci:51 #unde:39 #unes:28 #unfo:210 #unic:53 #unke:46 #unsu:65 #unte:-39 #untr:62 #upan:50 #urin:-42
#urth:148 #usca:34 #uscr:111 #used:-31 #ushy:39 #usly:44 #uspe:43 #usta:-28 #usua:-56 #uter:58 #utor:100 #vaci:-32
#vame:36 #vanm:106 #vend:38 #vent:-36 #vere:-28 #vibr:-36 #vida:-37 #vide:97 #vien:55 #vier:-77 #visa:-35 #voca:29
#voic:-37 #voke:150 #volv:-58 #voqu:-47 #vorc:32 #wait:-45 #want:157 #wasn:37 #went:54 #were:-28 #what:-51 #when:-65
#wher:-57 #whil:40 #wint:-71 #wipe:28 #wish:106 #wist:-35 #woke:-38 #worr:-45 #wors:51 #wrec:39 #writ:-31 #xact:43
#xtea:56 #xtee:160 #xtin:-51 #yard:69 #yaro:27 #yeah:27 #year:80 #ying:-32 #ymor:29 #your:108 #yste:38 #ythi:35
#yuda:-29 #yway:33 %again_later:-185 %again_later%agree:92 %again_later%away:-49 %again_later%bad:76
%again_later%bring:-70 %again_later%call_off:-70 %again_later%car_part:37 %again_later%doubt:-107
%again_later%family:42 %again_later%gone_car:47 %again_later%leave_me:-85 %again_later%message:-31
%again_later%money:110 %again_later%on_way:34 %again_later%phone:40 %again_later%shift_it:54 %again_later%staff:-52
%again_later%wrong_one:121 %agree%bad:37 %agree%bring:-103 %agree%call_off:57 %agree%car:123 %agree%car_part:-93
%agree%fails:-77 %agree%family:67 %agree%gone_car:149 %agree%how_long:-47 %agree%leave_me:29 %agree%meaning:-36
%agree%message:-120 %agree%odometer:-88 %agree%phone:84 %agree%place:87 %agree%question:118 %agree%refuse:-57
%agree%season:106 %agree%shift_it:100 %agree%staff:86 %agree%start_again:-106 %agree%wrong_one:60 %away:38
%away%bring:-27 %away%car:-27 %away%doubt:59 %away%fails:-50 %away%leave_me:147 %away%machine:49 %away%message:49
%away%on_way:44 %away%phone:29 %away%refuse:71 %away%season:100 %bad%bring:-33 %bad%car_part:37 %bad%do_it:-40
%bad%fails:72 %bad%leave_me:109 %bad%money:49 %bad%odometer:-58 %bad%phone:-33 %bad%refuse:-45 %bad%season:37
%bad%shift_it:58 %bad%wrong_one:68 %bring:-75 %bring%busy:-89 %bring%car:-38 %bring%car_part:-84 %bring%elsewhere:28
%bring%fails:-54 %bring%gone_car:69 %bring%leave_me:-52 %bring%message:157 %bring%noise:30 %bring%odometer:-57
%bring%on_way:32 %bring%place:-29 %bring%refuse:-71 %bring%season:62 %bring%staff:70 %bring%start_again:81
%bring%thanks:101 %bring%who:125 %bring%wrong_one:-103 %busy:-125 %busy%car_part:40 %busy%gone_car:27
%busy%odometer:86 %busy%wrong_one:-28 %call_off:66 %call_off%car:-35 %call_off%car_part:-39 %call_off%elsewhere:-66
%call_off%fails:46 %call_off%family:-37 %call_off%gone_car:55 %call_off%how_long:50 %call_off%machine:-63
%call_off%meaning:36 %call_off%message:209 %call_off%money:-94 %call_off%noise:43 %call_off%on_way:-41
%call_off%pay_day:-69 %call_off%refuse:-118 %call_off%smoke_smell:-71 %call_off%start_again:184 %call_off%thanks:30
%call_off%who:173 %call_off%wrong_one:-54 %car:-79 %car%elsewhere:-40 %car%gone_car:107 %car%leave_me:54
%car%message:94 %car%money:-54 %car%odometer:90 %car%phone:-40 %car%refuse:42 %car%smoke_smell:28 %car%staff:-61
%car%start_again:-36 %car_part:-153 %car_part%elsewhere:-31 %car_part%family:40 %car_part%gone_car:33
%car_part%leave_me:-135 %car_part%message:-234 %car_part%noise:47 %car_part%on_way:61 %car_part%phone:35
%car_part%question:-27 %car_part%refuse:-62 %car_part%season:-29 %car_part%smoke_smell:77 %car_part%wrong_one:54
%do_it:-66 %do_it%elsewhere:71 %do_it%fails:-31 %do_it%family:76 %do_it%gone_car:36 %do_it%leave_me:54
%do_it%machine:41 %do_it%meaning:-37 %do_it%message:159 %do_it%odometer:-81 %do_it%pay_day:-30 %do_it%phone:-67
%do_it%season:38 %do_it%shift_it:-32 %do_it%staff:32 %do_it%start_again:42 %do_it%thanks:31 %doubt%elsewhere:-51
%doubt%money:27 %doubt%question:137 %doubt%thanks:49 %doubt%wrong_one:-88 %elsewhere:29 %elsewhere%fails:-45
%elsewhere%message:93 %elsewhere%odometer:-55 %elsewhere%phone:93 %elsewhere%refuse:44 %elsewhere%who:68
%fails%gone_car:-56 %fails%leave_me:69 %fails%message:104 %fails%on_way:-43 %fails%phone:100 %fails%question:-104
%fails%refuse:49 %fails%shake:-38 %fails%smoke_smell:-59 %fails%staff:-29 %fails%start_again:-43 %fails%thanks:59
%fails%wrong_one:134 %family:-135 %family%leave_me:32 %family%money:-29 %family%odometer:-71 %family%on_way:49
%family%phone:49 %family%start_again:57 %gone_car:-68 %gone_car%leave_me:35 %gone_car%message:90 %gone_car%phone:-88
%gone_car%question:-67 %gone_car%season:29 %gone_car%shift_it:-32 %gone_car%staff:-33 %gone_car%start_again:72
%gone_car%thanks:49 %gone_car%wrong_one:-44 %how_long:-55 %how_long%message:63 %how_long%opening:28
%how_long%refuse:27 %how_long%shift_it:27 %leave_me:490 %leave_me%lift:-30 %leave_me%machine:27 %leave_me%meaning:44
%leave_me%message:-36 %leave_me%money:-95 %leave_me%odometer:-83 %leave_me%on_way:-52 %leave_me%pay_day:-80
%leave_me%phone:169 %leave_me%refuse:-108 %leave_me%shake:69 %leave_me%staff:156 %leave_me%start_again:60
%leave_me%thanks:109 %leave_me%who:148 %leave_me%wrong_one:160 %lift:-31 %machine%message:34 %machine%odometer:59
%machine%question:-27 %machine%refuse:-58 %machine%staff:-92 %machine%start_again:-27 %meaning:-61 %meaning%phone:27
%meaning%who:-27 %message:217 %message%money:106 %message%noise:80 %message%odometer:71 %message%pay_day:-72
%message%question:-89 %message%refuse:148 %message%season:-27 %message%shift_it:-51 %message%staff:-128
%message%start_again:-45 %message%thanks:124 %message%who:28 %message%wrong_one:35 %money:-48 %money%odometer:-55
%money%refuse:69 %money%shift_it:60 %money%start_again:119 %money%wrong_one:61 %noise:-67 %noise%on_way:55
%noise%refuse:-38 %odometer:84 %odometer%on_way:-53 %odometer%pay_day:-29 %odometer%phone:153 %odometer%place:-30
%odometer%question:76 %odometer%refuse:-52 %odometer%who:-64 %odometer%wrong_one:118 %on_way:-101 %on_way%phone:43
%on_way%question:137 %on_way%refuse:37 %on_way%staff:-29 %on_way%wrong_one:67 %pay_day:-103 %pay_day%season:-50
%phone:-54 %phone%place:-59 %phone%staff:-35 %phone%start_again:27 %phone%wrong_one:-45 %place:-39
%place%question:-79 %place%shift_it:30 %place%start_again:-28 %question:-228 %question%refuse:116 %question%season:45
%question%shift_it:-61 %question%staff:-44 %question%wrong_one:41 %refuse%shake:-46 %refuse%smoke_smell:-71
%refuse%start_again:255 %refuse%thanks:135 %refuse%who:48 %refuse%wrong_one:50 %season%staff:34 %shift_it:-51
%shift_it%staff:-30 %shift_it%start_again:-84 %shift_it%wrong_one:29 %smoke_smell:-32 %smoke_smell%wrong_one:39
%staff:-63 %staff%start_again:-65 %staff%wrong_one:102 %start_again:-270 %start_again%who:77
%start_again%wrong_one:159 %thanks:-32 %who:-126 %wrong_one:-52 @?:-67 @after_visit:35 @car:-27 @confirm_stop:332
@confirm_stop_please_do:66 @day:-32 @later:-62 @nothing:30 @reading:-69 @times:-176 ^_afirmativo:34 ^_after:29
^_ahora:-49 ^_all:37 ^_already:-59 ^_asi:64 ^_basta:66 ^_bendiciones:-54 ^_borren:-48 ^_borrenme:-107 ^_both:36
^_cambie:-34 ^_cancel:314 ^_cancelar:201 ^_cancele:80 ^_cant:-29 ^_car:-66 ^_claro:56 ^_como:-159 ^_con:-87
^_count:-27 ^_cut:71 ^_de:-156 ^_dejame:84 ^_deje:-73 ^_dejen:237 ^_delete:-141 ^_do:143 ^_dont:-133 ^_drop:33
^_end:96 ^_enough:111 ^_eres:-51 ^_es:-54 ^_ese:-86 ^_eso:49 ^_estoy:-37 ^_every:28 ^_forget:31 ^_free:-31 ^_get:107
^_go:124 ^_got:-27 ^_he:-54 ^_hi:27 ^_hit:-34 ^_how:-135 ^_ill:28 ^_in:-35 ^_info:-147 ^_is:-61 ^_keep:-91 ^_kill:98
^_kindly:-55 ^_le:28 ^_leave:-48 ^_les:43 ^_lets:32 ^_los:27 ^_mande:-85 ^_mas:-46 ^_me:-53 ^_mi:-44 ^_min:-48
^_mis:-29 ^_my:-129 ^_negativo:-34 ^_neither:-52 ^_nel:-105 ^_ninguno:-47 ^_no:-108 ^_nobody:62 ^_nombre:-79
^_not:-55 ^_number:-48 ^_off:45 ^_oh:-53 ^_one:-78 ^_opt:-56 ^_optout:109 ^_parar:55 ^_pare:64 ^_phone:-60 ^_por:75
^_primero:-33 ^_pues:36 ^_pull:92 ^_que:-36 ^_quiero:-78 ^_quit:52 ^_quitenme:-59 ^_re:-27 ^_remove:36
^_resubscribe:-84 ^_retiro:48 ^_revoke:90 ^_salir:113 ^_saquenme:36 ^_send:-75 ^_si:59 ^_sold:57 ^_someone:-31
^_soy:-41 ^_stop:230 ^_stopall:93 ^_take:110 ^_te:-66 ^_tengo:-29 ^_text:-63 ^_texting:93 ^_that:27 ^_the:47
^_third:-30 ^_this:-47 ^_un:118 ^_unsubscribe:-255 ^_vendi:55 ^_vuelvan:-27 ^_vuelvanme:-29 ^_what:-57 ^_who:135
^_wouldnt:-28 ^_wrong:-55 ^_yo:43 ^_you:-28 ^_your:55 ^_youve:-38 a:-39 a__call:-46 a__day:30 a__en:-29 a__from:-56
a__in:-29 a__is:28 a__mechanic:40 a__number:-30 a__numero:55 a__off:-73 a__phone:46 a__si:46 a__when:-28 a_blessed:29
a_car:46 a_escribir:70 a_este:134 a_favor:36 a_person:-64 a_recibir:-36 a_rip:-30 a_salir:-58 a_stop:-34 a_tow:43
a_week:52 about:-75 about_how:36 about_it:40 about_oil:-38 about_tires:-39 acabo:-35 acabo_de:-35 accident:-30
account:47 add:-27 adelante:-34 afirmativo:34 after_that:30 afuera:-45 afuera_$:-42 again:40 again_$:38 again__i:57
again_and:57 ago:41 ahi:81 ahi_$:93 ahi_voy:-30 ahora:-34 al:-85 algo:36 alignment:-71 all__it:53 all__on:-42
all__them:-42 all__you:39 all_good:-78 all_right:39 alone:63 alone_$:-32 alone_already:83 already:45 already__me:-43
already__the:110 already_did:48 already_with:60 also:44 alto:96 alto_$:151 altos:-27 altos_$:-27 am:-95 am_$:-68
am_and:-31 am_i:59 amable:-51 amable_$:-50 an:-29 an__change:54 an_oil:54 and:128 and__dont:28 and__get:34 and__is:58
and__like:-41 and__me:-55 and__my:61 and__one:38 and__text:-54 and__the:36 and_dont:100 and_i:118 and_it:54
and_now:-31 and_out:-37 and_please:74 and_stop:82 and_thank:-33 and_this:-45 and_your:31 andan:27 andar:-34 ando:-27
annoying:-54 annoying_$:-39 another:69 any:63 anymore:29 anymore_$:-32 anything:56 anything_else:96 anyway:33
anyway_$:46 aqui:97 aqui_$:124 are:52 are_$:-64 arm:-35 arregle:-32 as:30 as__as:38 as_i:28 as_long:36 asi:-34
asi_$:-43 asi_es:59 asi_que:29 ask:-57 ask__again:-56 ask_me:-55 asked:29 asked_for:31 asking:46 asking_$:36 at:-162
at__and:-28 at__dealer:30 at_am:-29 at_it:56 at_work:-39 automatica:-29 away:58 away_$:80 baby:-38 baby_$:-38
bache:-33 back:-45 back_in:67 back_on:-43 baja:77 barely:-74 base:38 base__datos:38 base_de:38 basta:31 basta_$:78
be:178 be__a:34 be__your:72 be_a:34 be_in:47 be_on:36 be_the:54 be_there:-35 because_i:43 been__since:46
been__your:-42 been_there:48 been_to:-54 before:-64 before_i:44 being:47 best_$:34 bien:-71 bien_asi:-77 blessed:29
blessed_day:29 block:77 blocked:-83 blocking:30 blocks:-52 book:-39 book_me:-34 booking:33 borre:63 borre_mi:64
borren:94 borrenme_$:32 borrenme_de:-30 both:-35 both__so:45 brakes:31 brakes__stop:-38 brakes_are:61 bueno_de:36
bulb:-27 buscan:35 business_$:45 busy:-75 but:-66 but_dont:45 but_not:-38 by:-78 by__way:55 by_a:42 by_mistake:-72
by_the:54 bye:48 cabin:-32 cabin_filter:-32 cada:-27 call:-59 call_$:-143 call__me:-97 call_me:-28 call_my:72
can:-107 can__be:100 can__guys:48 can__stop:-50 can__take:-124 can__with:35 can_stop:109 can_text:-85 can_you:-83
cancel:88 cancel_$:268 cancel__appointment:-37 cancel__please:-151 cancel_it:-165 cancel_my:-65 cancel_please:196
cancelar:140 cancelar_$:152 cancelar__cita:-61 cancelar_mi:-66 cancele:32 cancele__cita:63 cancele__favor:-33
cancele_la:30 cancele_mi:33 cancele_por:-33 cancelen:-55 cancelen_mi:-31 cancelo:-73 cant:-70 cant__in:-31
cant_stop:-34 car__at:43 car__gone:28 car_is:43 car_just:-43 car_quit:60 care:-42 care_$:-47 caro:35 carro:39
carro_$:-35 carro__los:58 carro__me:47 carro__para:-30 carro_ni:56 carro_no:55 cars:27 caught:32 caught_fire:32
cease:59 cel:97 cel_$:53 cell:45 celular:30 cerca:-29 change:40 changed:-42 changes:-38 changes_$:-38 charged_me:46
cita:-106 cita__favor:-114 cita_por:-114 cita_y:83 clear:67 coffee:-40 come_in:30 coming_$:-36 coming_tomorrow:36
como:-90 como__el:33 como__hago:-62 como_le:-62 como_me:30 como_se:-30 compa:40 compa_$:-30 computer:59 computer_$:60
con__me:-36 con__mensajes:-63 con__textos:122 con_la:42 con_los:145 con_mi:-28 con_ustedes:75 conozco:52
conozco_$:-36 consent_to:-44 contact__again:104 contact_me:90 contacten:52 contacten_$:44 contesta:28 cosa:-68
cosa_$:-90 cosas:49 costs:39 couldnt:-29 count:-37 count__out:-37 count_me:-37 country:62 covid:-41 cross:-46
cuando:69 cuenta_$:42 cunado:37 cut:87 dar:65 datos:69 datos_$:45 dawn:-37 day_is:-37 de:112 de__base:38 de__con:61
de__en:-79 de__frenos:-55 de__lista:77 de__llantas:-46 de__me:56 de__mensajes:30 de__mi:27 de__que:-33
de__recordatorios:-29 de__si:-33 de__sistema:41 de__son:-30 de__textos:34 de__y:-72 de_ahi:154 de_aqui:130 de_baja:83
de_datos:38 de_esas:37 de_escribir:-31 de_escribirme:38 de_eso:-48 de_estar:39 de_este:-31 de_la:-47 de_las:-45
de_los:-33 de_manana:-36 de_mandar:46 de_mandarme:39 de_mas:-44 de_no:32 de_nuevo:-134 de_que:34 de_quien:-33
de_siempre:-42 de_su:101 de_sus:81 de_textearme:27 de_un:-55 de_vuelta:-49 dealer_$:29 dejame:51 dejan:-29 deje:-141
dejen:68 dejen__escribirme:39 dejen__estar:39 dejen__mandarme:-58 dejen_de:115 dejenlos:-46 dejenme:88 del:-93
del__de:-28 del__ya:-31 del_dia:-29 del_viernes:-82 delete__number:60 delete_my:71 demasiados:-55 den_de:33
despues:33 despues_de:36 di:-40 dia:-72 dia_de:-45 dias:-53 did__oil:51 did_the:51 died:-46 digits:28 digo:29
digo_$:29 dije:57 dinero:-41 ditch:37 do_$:-39 do__a:36 do__got:72 do__take:-39 do__text:-44 do__want:51 do_i:-49
do_me:36 do_not:306 do_this:-31 do_you:-80 does:-53 does_not:-33 doesnt:-37 domingo:-45 domingo_$:-29 don:-42 done:75
done_with:55 dont__a:92 dont__any:60 dont__in:62 dont__it:69 dont__me:186 dont__texting:-162 dont__this:37
dont__to:39 dont__you:56 dont__your:105 dont_call:-92 dont_do:-77 dont_need:108 dont_send:219 dont_stop:-595
dont_text:134 dont_want:145 down:-27 doy:-58 drop:82 drop__appointment:52 drop__from:83 drop_me:54 drop_my:48
during:-42 each:30 early:-78 early_$:-70 el:-133 el__y:43 el__ya:33 el_de:-43 el_jale:35 el_lunes:30 el_telefono:-39
else:80 else_$:110 elses:71 elsewhere:-58 elsewhere_$:-48 email:-39 en__altos:-27 en__con:37 en__noche:-57
en__taller:44 en__ya:79 en_enero:35 en_este:-39 en_la:-73 en_los:-99 en_otro:68 en_paz:163 en_serio:-28 end:52
end_$:55 end__this:-62 end_of:-68 end_the:31 ended:-79 ends:-59 english:27 enough_$:59 enough__with:60
enough_already:60 equivocado:33 equivocado_$:-60 equivoque:-47 era:-31 eres:-47 eres__o:-45 es:-43 es__cita:48
es__de:-32 es__mi:-54 es__que:53 es__ya:60 es_mi:84 es_para:-53 es_que:31 esa_persona:33 escriban_$:125
escriban_tan:-72 escribe:30 escriben:-55 escribir:-94 escribirme:41 escribirme_$:52 ese:-73 ese__ya:-31 ese_carro:28
ese_senor:-28 eso_$:-82 eso__lo:27 eso__me:27 eso_que:34 eso_ya:56 espanol:35 esperaba:-35 esta:-51 esta__asi:-77
esta_bien:-73 esta_bueno:42 estar:40 este:40 este__no:64 este_momento:-39 este_telefono:31 esten:90 esto:85
esto_$:106 estos:37 estoy__el:48 estoy__en:-29 estoy_en:41 estoy_manejando:-29 estuvo:52 estuvo__de:36
estuvo_bueno:36 ever:167 ever_$:28 every:43 everything_$:43 ex:-30 fa:59 family:32 favor:58 favor__me:-43
favor_and:36 feel:-34 filter:-58 fin:53 fixed:44 flat:-30 flat_out:-32 follow:-44 following:-30 for:73 for_$:-60
for__i:-46 for__lol:-40 for_a:-27 for_good:54 for_it:-51 for_me:-69 for_sure:-41 for_that:-27 for_the:69 for_these:66
for_your:-29 forever_$:-46 four:-34 frenos:-51 frenos_ya:-55 friday_but:51 from:91 from__list:36 from__place:55
from_a:-36 from_me:-39 from_my:-81 from_you:151 from_your:100 fue:-43 fuera:67 fuera_de:88 further:149 fyi:-49
fyi_$:-51 gave_you:-27 gente:-47 get:60 get__done:-42 get__off:55 get__this:-33 get__you:55 get_a:-28 get_it:-36
get_me:43 get_my:47 get_off:-34 get_these:80 getting:47 getting_these:53 go:86 go_away:167 god:67 going:-54
going__be:-53 going_to:-50 gone:42 good:-44 got:-75 got__for:-47 got__wrong:47 got_in:-48 got_it:36 got_the:46
got_to:66 gracias_por:-64 gracias_y:61 grinding:45 grinding_$:28 gusta:-27 gusta__me:47 gusta_que:47 guy:31
guy__it:45 habla:-28 habla_$:-27 hablamos:-33 hablamos_$:-33 hableme:-36 hace:-41 had__done:79 had_it:91 had_that:45
had_the:-42 had_to:-36 hago:-77 hago_para:-34 handled_$:-36 has:-32 hasta:29 hasta_el:34 hate:-31 have:-29
have__blessed:29 have__cancel:-39 have__car:87 have__no:-83 have__number:-42 have__say:56 have__to:60 have__wrong:91
have_a:50 have_been:37 have_had:-35 have_it:-81 have_my:-34 have_the:108 he:-76 he__the:29 head:-32 hear:43
hear_from:89 hearing:29 here:52 hi:27 hicieron__en:35 hicieron_todo:28 hijo:30 hijo_me:44 his:-36 hit:-40 hit__up:-36
hit_me:-36 hitch:54 hizo_mi:36 hold:-124 hombre:37 hora:-36 horas_$:27 hose:34 hours:31 hours_to:58 how:-109
how__a:-35 how__i:-158 how__times:148 how_about:38 how_do:-183 how_many:135 i:33 i__be:-35 i__do:-78 i__from:68
i__getting:29 i__had:-34 i__have:-41 i__in:-63 i__it:58 i__know:-36 i__like:39 i__longer:80 i__my:38 i__need:107
i__never:-28 i__no:61 i__not:40 i__off:75 i__out:55 i__see:-38 i__stop:-36 i__that:34 i__the:-43 i__these:-66
i__to:-61 i__want:73 i__you:57 i__your:-115 i_am:-46 i_be:109 i_cant:-41 i_feel:-35 i_gave:38 i_get:44 i_had:31
i_hate:-31 i_have:38 i_keep:70 i_like:-98 i_mean:52 i_meant:-33 i_moved:40 i_need:33 i_never:66 i_no:91 i_only:-59
i_quit:-73 i_said:131 i_sold:51 i_still:-33 i_stop:-145 i_take:-32 i_text:-63 i_thought:54 i_would:55 id__not:44
id_like:47 id_rather:29 idea:49 idea_$:52 if:35 if__need:45 if_it:51 ill:-56 ill__the:-57 ill_be:-33 ill_come:33
ill_stop:-28 ill_take:-63 im__a:31 im__and:52 im__of:-31 im__out:53 im__work:-35 im_at:-35 im_driving:34 im_on:41
im_out:-29 in:-48 in_$:-169 in__and:-41 in__life:30 in__of:46 in__out:-37 in__you:72 in_a:42 in_and:-37 in_june:-35
in_may:35 in_time:-32 in_when:27 in_your:35 indeed:42 info:69 interesa:-56 interest:54 interested:43
interested_$:-123 interested_in:74 into:-82 ir:-59 ir_$:-80 is_$:-49 is__i:50 is__old:-51 is__yes:-35 is_a:-90
is_at:34 is_done:35 is_fine:-34 is_for:109 is_getting:-110 is_in:35 is_it:-28 is_my:57 is_no:35 is_not:-68 is_off:38
is_ok:-31 is_perfect:-42 is_that:59 is_the:40 is_there:-50 is_this:-67 is_what:75 isnt:-125 it_$:-32 it__a:39
it__all:40 it__at:31 it__be:45 it__by:69 it__call:49 it__done:34 it__getting:-50 it__i:41 it__in:33 it__more:-48
it__my:51 it__on:-50 it__ready:-29 it__the:-40 it__two:-45 it__with:62 it__you:33 it_again:75 it_back:-27
it_cancel:-52 it_died:-44 it_fixed:66 it_for:68 it_is:41 it_no:-40 it_or:37 it_please:-88 it_so:52 it_would:49
it_you:-34 jaja:-49 jale:29 jale_$:30 jamas:41 january_$:-27 job:-31 job_$:-33 joint:33 joven:43 joven_$:33 june:-34
june_$:-33 junked:46 jury:-48 just:-127 just__it:-27 just__me:36 just__on:-43 keep:-171 keep_me:-109 keep_texting:-76
kid:-51 kill:120 kindly__my:-41 knock:-60 know:-70 know_you:-60 la:-151 la__de:-30 la__del:-85 la__por:-40 la__que:47
la__si:-29 la__vez:39 la__y:32 la_cita:-43 la_cuenta:48 la_noche:-56 la_otra:39 la_persona:46 laid:-36 las:-42
las_llantas:-44 last:-51 last__i:55 last__so:-51 last__why:65 last_one:29 last_time:-40 last_year:40 lata:64 law:46
le:-40 le__para:-54 le_digo:38 le_hago:-61 leave:-96 leave__alone:63 leave__on:-85 leave_it:-110 leave_me:52
leave_my:53 les:110 les__el:-27 les__mi:-34 les__que:123 les_dije:67 less:-80 lets__the:40 like:-58 like__on:-28
like_a:29 like_that:60 line:-34 list:34 list_$:32 list_please:49 lista:47 live:43 live__the:56 live_in:44 llamame:-27
llamenme:-68 llamo:30 llantas:-40 llantas_$:-42 llegando:-32 lleguen_$:-38 lo:-45 lo__de:-68 lo__en:65 lo__mi:32
lo_mio:-46 lo_que:39 lo_quiero:31 location:-58 location_$:-59 loco:40 lol:-116 lol_$:-38 lol_no:-34 lol_ok:-34
long__i:28 long_as:36 longer:52 longer__it:-28 longer__to:83 los:-76 los__a:51 los__no:-45 los__por:-55 los__ya:-38
los_altos:-27 los_avisos:-64 los_conozco:34 los_frenos:-51 lost:-27 lot:50 lot_$:59 love:65 loved:-35 lunes:28
lunes__no:33 made:50 make:-63 make_these:-40 mal:48 malo:-33 manager:35 manana:-39 manda:29 mandan:-104
mandando_$:-446 mandar_mensajes:39 mandarme:65 mandarme_recordatorios:-55 mande:-85 mande_$:-85 manden:136
manden_$:50 manden_mas:65 manden_mensajes:-78 manden_nada:74 manden_textos:51 mandenme:-47 many__do:131
many_texts:-130 many_times:148 marqueme:-48 marqueme_$:-48 mas:299 mas_$:47 mas_adelante:-33 mas_de:-48 mas_por:235
mas_y:-37 matters:29 may:27 mayor:72 me:76 me_$:124 me__a:65 me__about:-38 me__ahi:56 me__al:-47 me__am:-74
me__and:55 me__before:58 me__como:31 me__dar:74 me__dont:30 me__el:-34 me__hasta:33 me__have:37 me__how:35 me__i:94
me__im:-78 me__in:-61 me__like:-72 me__los:-53 me__mandar:-34 me__mas:176 me__mensajes:-60 me__nada:56 me__of:69
me__please:-78 me__tan:-72 me__text:-38 me__the:-31 me__this:49 me__to:-27 me__todo:33 me__una:-29 me__what:50
me__y:-68 me__your:68 me_a:-68 me_about:-59 me_again:107 me_alone:70 me_and:97 me_at:-51 me_back:-48 me_be:73
me_before:-90 me_contacten:52 me_dijo:32 me_equivoque:-47 me_escriban:-27 me_escriben:-51 me_from:52 me_habla:-30
me_i:-51 me_interesa:-55 me_la:-33 me_like:76 me_lleguen:35 me_manda:38 me_mandan:-76 me_off:169 me_olvida:-44
me_quiten:55 me_rayaron:28 me_sirven:-73 me_so:-123 me_texteen:62 me_that:27 me_the:-62 me_tienen:32 me_trataron:61
me_up:-59 me_va:-29 me_van:32 me_vuelvan:66 me_your:-29 mean_it:56 meant:-50 mejor:42 mejor__no:-29 mejor_que:-29
menos:-55 mensaje:-99 mensajes:73 mensajes_$:181 mensajes__favor:75 mensajes__vez:-48 mensajes_a:33 mensajes_otra:-48
mensajes_por:43 mensajitos:78 mensajitos_$:39 mes:-34 message:-106 message_$:-63 message_me:131 messages:57
messages_$:63 messaging:87 mi:104 mi__no:-47 mi__para:107 mi__se:31 mi__y:47 mi__ya:-56 mi_cel:93 mi_cita:-33
mi_cunado:37 mi_ex:-30 mi_hijo:31 mi_nieto:-29 mi_numero:134 mi_telefono:130 mijo:47 mijo_$:66 min:-49 mind:-27
mine:-41 mine_$:35 mins:-30 mio:-46 mistake:-72 molesta:-30 molesten:44 molesto:-32 more:141 more_$:74 more__i:31
more__please:52 more_messages:53 more_of:38 mothers:46 much:-54 mucho:55 mucho_$:72 muchos:-80 must_be:-33 muy:-90
muy_amable:-51 my:51 my__already:44 my__are:58 my__dont:69 my__for:96 my__from:30 my__i:-29 my__is:-41 my__it:39
my__lol:-35 my__not:54 my__number:35 my__on:-40 my__out:69 my__please:93 my__to:-37 my_arm:-35 my_car:-49 my_cell:43
my_end:-45 my_info:221 my_kid:-52 my_list:-89 my_name:-36 my_nephew:48 my_number:206 my_other:-31 my_own:-33
my_phone:53 my_seat:38 my_work:34 nada:83 nada_$:68 nada__eso:-44 name:-34 name_off:-34 need:31 need__cancel:-51
need__oil:54 need_a:48 need_an:55 need_it:-53 need_to:-98 need_you:55 negativo:-34 neither:-52 nel:-105 nephew:48
never__me:189 never__to:54 never__you:-33 never_text:114 never_want:68 next:30 next_year:30 ni:90 ni__conozco:50
ni__ni:29 ni_loco:-32 ni_los:36 ni_se:-27 ni_un:59 nieto:-29 night:-46 night_$:-48 ninguno_ya:-46 no:-33 no_$:-261
no__a:84 no__bien:-76 no__con:85 no__de:-373 no__escriban:-34 no__este:-36 no__gracias:-64 no__gusta:31 no__i:-48
no__interesa:-39 no__ir:-54 no__is:-27 no__lo:-45 no__manden:-62 no__me:-32 no__mensajes:30 no__messages:78
no__mi:-87 no__need:-63 no__no:101 no__para:-53 no__por:191 no__que:86 no__quiero:80 no__quiten:-122 no__recibir:153
no__sus:30 no__texteen:60 no__textos:49 no__texts:73 no__to:-107 no__vuelvan:70 no__want:-76 no__was:-45 no__y:48
no__you:62 no_and:51 no_day:40 no_dont:-88 no_es:-37 no_esta:-81 no_estoy:28 no_further:148 no_gracias:-70 no_i:-172
no_it:51 no_keep:-136 no_lo:41 no_longer:65 no_los:-49 no_manden:119 no_mas:206 no_me:264 no_more:401 no_necesito:31
no_need:-104 no_no:-133 no_paren:-229 no_pedi:37 no_point:29 no_quiero:100 no_se:-28 no_siganme:-32 no_texts:123
no_thank:63 no_that:-65 no_trabajo:84 no_vuelvan:59 no_ya:-61 no_you:-93 noche:-105 noche_$:-59 nomas:-42
nomas_los:-27 nombre:-83 non:-77 normal:73 not__in:74 not__me:48 not__not:-36 not_a:-41 not_at:-38 not_coming:31
not_ever:-38 not_for:-41 not_friday:-37 not_going:-51 not_interested:95 not_me:-34 not_my:-27 not_now:-38 not_text:68
not_til:38 not_to:59 notice:37 now:41 now__it:27 now__me:50 now_on:39 nueva:-40 nuevo:-131 nuevo_$:-42 number:77
number__it:84 number__of:76 number_again:42 number_from:43 number_is:64 number_off:86 number_out:76 numero:75
numero__su:27 numero_de:34 numero_no:35 nunca_mas:65 nunca_me:-39 o:255 ocupan:50 of:39 of_$:-39 of__on:43 of__so:40
of__system:28 of__to:-32 of_it:59 of_may:-32 of_my:38 of_state:39 of_the:-59 of_town:-27 of_you:-33 of_your:36
off:202 off_$:183 off__and:-125 off__i:31 off__schedule:-56 off_before:58 off_of:48 off_this:115 off_your:95 oh:-53
oil:49 oil_$:53 oil_change:37 oil_changes:-38 ok_$:70 ok__can:48 ok_yes:-37 ok_you:29 old:-66 old_$:-63 olvida:-44
olvidelo:-37 on:-116 on_$:-118 on__list:-59 on__phone:65 on_a:42 on_me:-66 on_them:39 on_you:-34 on_your:-28 once:-72
one:-29 one__me:40 one_of:81 one_text:-34 ones:-62 only__it:32 opt:-70 opt_me:29 opt_out:67 optout:109 optout_$:109
or:157 or__call:37 or_anything:-31 other:-91 otra:-62 otra_vez:-28 otro_taller:46 out:95 out_$:66 out__a:-36
out__state:39 out__town:-27 out__your:44 out_last:65 out_of:28 own_it:39 pads:-34 para:-88 para__no:-41
para_nada:-113 para_que:-33 parar:31 parar_$:53 pare:35 paren_$:-40 parenle:111 parenle_$:60 parte:76 parte_de:72
pass:-39 pass_$:-32 passed:29 paz:163 pedi:45 pedi_$:40 pedi_permiso:-31 pena:35 people:29 people_$:44 people_are:41
perdon:-29 perfect:-41 perfect_$:-42 permiso_de:48 permission:94 pero:-97 pero_no:-36 persona:66 persona_que:50
pesimo_servicio:28 phone:68 phone_$:106 phone_belongs:33 phone_me:-135 pin:-40 pin_$:-40 place_$:40 please:62
please_$:-89 please__is:-48 please__my:-33 please__thank:-44 please__the:-85 please__you:-43 please_cancel:-53
please_do:-51 please_dont:-51 please_have:-53 please_phone:-29 please_quit:44 please_stop:141 point:29 poner:-63
pongan:-30 por:-63 por__me:-44 por__que:-34 por_fa:59 porque:35 primero:-35 pueden:-36 pueden__de:29
pueden_mandar:-32 pues_$:-30 pues__que:-27 pues_si:55 pues_ya:-27 pull:70 pull_my:78 puse:-37 put:-30 que:99
que_$:-192 que__borren:78 que__con:46 que__de:74 que__en:-38 que__eso:40 que__le:37 que__los:75 que__manden:94
que__me:52 que__mi:65 que__ni:30 que__para:-34 que__que:-41 que__soy:-35 que_buscan:50 que_cancelar:-27 que_les:100
que_me:112 que_paren:-35 que_parte:28 que_pena:35 que_si:105 que_tengo:-33 que_ya:61 querer:-68 quien:-54 quiero:60
quiero_$:44 quiero__a:-53 quiero__con:-44 quiero__de:95 quiero__mas:67 quiero__me:55 quiero__mensajes:-36
quiero__nada:106 quiero_ir:-53 quiero_los:-41 quiero_nada:-47 quiero_que:-83 quiero_recibir:161 quiero_textos:68
quiero_volver:-47 quit:34 quit_$:109 quit__me:95 quit_it:82 quit_my:-33 quit_on:-99 quit_sending:42 quit_smoking:-61
quit_texting:92 quita:32 quiten:-133 quiten_$:-83 quiten__cita:-35 quiten__numero:-45 quiten_mi:-62 quitenme:155
quitenme_$:99 quitenme_de:42 ran:-31 rather_not:42 rayaron:27 rayaron_el:28 re:-27 reads:-30 ready_$:-45
receive__messages:75 receive_these:135 recibir:81 recibir_mensajes:-95 recordatorios:-45 recordatorios_$:-48
reminders_$:-32 remove:104 remove__number:42 remove_me:58 remove_my:29 remove_the:-63 reply:29 reply_$:47 report:29
respuesta:-29 respuesta_automatica:-29 rest:-57 resubscribe:-84 retiro:48 retiro_mi:48 revoke:150 rid:39 rid_of:39
right:65 ring__about:35 rip:-30 ripped:-35 robo:28 robot:28 sacar:-69 said:60 said_$:51 said_no:74 said_stop:-52
salir:59 salir_$:64 salir_de:36 saquenme:38 say_no:-140 saying:67 schedule:-52 schedule_$:-50 school:-30 school_$:-28
se:-122 se__mas:38 se__no:47 se__olvida:-44 se_equivocado:62 se_me:-60 seat:37 see:-32 semana:-27 semana_que:-31
send:66 send_me:106 sending:72 sending_me:89 sending_these:28 senorita:28 ser:29 serio:-28 set:-36 shake:56 shop:-41
shop_in:27 shop_is:-27 shuts:-27 shuts_off:-27 si:63 si_$:-42 si__favor:-79 si__no:93 si__si:58 si__todo:64 si__y:-30
si_es:31 si_hombre:66 si_le:37 si_me:38 si_no:32 si_pero:-31 si_por:-79 si_quiero:-123 si_y:66 si_ya:56
siempre_no:-41 siganme:-38 sign:-35 sin:-124 sin_querer:-68 since_you:41 sirven:-73 sirven_$:-46 sistema:41
sistema_$:42 smoking:-60 so:-121 so__at:-50 so__can:69 so__it:45 so__my:44 so__need:40 so_cancel:-27 so_you:74
sold__car:29 sold_it:-41 sold_the:30 somebody__me:-36 somebody_elses:71 someone:-49 son:-66 sorry:-47 soy__persona:99
soy_de:-35 soy_esa:33 soy_la:50 spam:93 spending:-36 stay:-36 steam:41 still__the:-77 stop:138 stop_$:266
stop__here:-59 stop__it:-95 stop__my:48 stop__texts:-139 stop__these:64 stop_at:-43 stop_by:-104 stop_in:-58
stop_messaging:57 stop_sending:64 stop_sign:-33 stop_texting:32 stop_the:-102 stop_these:-30 stop_worrying:-34
stopall:93 stopall_$:93 stops:-61 strike:78 stuff_$:114 stuff__the:-30 su:33 su__de:51 su_base:38 su_lista:49
summer:28 sure_$:37 sus:60 system:34 system_$:32 t:420 take:113 take__number:90 take__off:128 take_a:165 take_me:112
take_my:36 take_the:-88 take_this:59 taken:86 tal:-33 talked:-51 taller_$:28 tan:-181 te:-88 telefono:34
telephone:-42 telephone_me:-27 tell:-65 tell_me:-64 temprano:-85 temprano_$:-82 tengan:-42 tengo:-41 tengo_el:32
tengo_que:-58 text:-82 text_$:31 text__again:188 text_again:36 text_list:40 text_me:28 text_messages:29 text_to:-63
text_you:34 textear:-43 texteen:95 texteen_$:54 texting:-51 texting_$:-43 texting_me:34 texting_this:45 texto:42
textos:28 textos_$:93 texts:-30 texts_about:-55 texts_again:-214 texts_please:-45 than:-99 that:-67 that__a:-34
that__my:-44 that__text:-184 that__the:67 that__what:74 that_car:-70 that_is:112 that_last:-145 that_off:-49
that_thing:46 that_was:-36 the:-100 the__again:-27 the__anymore:59 the__filter:-51 the__from:-31 the__guy:43
the__i:-64 the__it:-32 the__lot:55 the__my:42 the__number:-85 the__of:70 the__ones:-63 the__phone:-27 the__so:-34
the__time:27 the__who:27 the__you:42 the_baby:-29 the_bulb:-27 the_cabin:-34 the_calendar:-63 the_car:42
the_country:62 the_dealer:31 the_job:-34 the_last:73 the_list:103 the_manager:36 the_oil:53 the_one:27 the_pads:-36
the_phone:-53 the_reminders:-32 the_rest:-57 the_right:28 the_schedule:-54 the_stop:-58 the_text:93 the_texts:41
the_third:43 the_tire:-73 the_way:55 the_whole:30 the_wrong:-70 them_$:-58 there__me:-48 there__you:29 there_a:-33
these:121 these_$:61 these_anymore:69 these_messages:69 these_texts:-40 they:-68 things:-65 think:59 think_$:77
think_you:-61 third_time:35 this:86 this__again:107 this__for:33 this__is:53 this__not:-27 this__please:46
this__the:-44 this_and:-44 this_isnt:46 this_list:-27 this_number:69 this_one:-50 this_phone:135 this_place:55
this_texting:-55 this_to:53 this_was:-27 this_week:-43 though_$:-50 thought:53 three_times:-29 thumbsup_$:50
tiene:-39 tienen:28 tienen__el:32 time:-90 times:137 tire:-69 tires:-37 to:-39 to_$:-59 to__and:-49 to__daughter:76
to__from:88 to__in:52 to__it:-57 to__kid:-29 to__me:-40 to__on:36 to__out:39 to__the:-69 to__there:-47 to__these:94
to__this:-27 to_a:-28 to_be:69 to_cancel:-58 to_hear:54 to_my:31 to_opt:61 to_quit:-34 to_say:141 to_stop:-40
to_take:47 to_your:-30 toca:-31 todavia:35 todavia_me:41 todo:37 todo_en:28 tomorrow_and:28 too:-67 too_much:-32
tow:42 tow_hitch:54 trabajo:52 tratar:-71 trataron:61 tu:82 tuesday:-32 turn:39 turn_them:58 two:-111 type:-31
un__mas:58 un_mensaje:28 una:-42 una__no:-29 under:41 under_the:55 uno:-28 unsubscribe:98 unsubscribe_$:-138
unsubscribe_me:97 unsubscribed:-33 up__may:-36 up_in:-38 us:78 use:49 use_it:102 use_the:-29 used:-31 ustedes:40
ustedes_$:-95 ustedes__me:-53 ustedes__mi:81 ustedes_me:-31 usually:-56 va:-46 va__salir:-38 va_a:-40 vacio:-32
veces_que:45 vendi:43 vendi__carro:40 viernes:-74 viernes_$:-81 volver:-58 volver__recibir:-36 volver_a:-58 voy:40
voy_$:-59 voy_a:57 vuelta:-49 vuelva:61 vuelva_a:71 vuelvan:66 vuelvan__escribir:48 vuelvan__mandarme:-27
vuelvan_a:66 vuelvanme:-51 vuelvanme_a:-51 want:61 want__be:64 want__hear:60 want_it:-55 want_out:78 want_the:-88
want_them:-60 want_to:68 was:-74 was_fine:31 wasnt:37 way_too:-31 we__that:44 week_$:-43 week_is:50 went:53
went__in:70 were:-32 what:-84 what_$:-50 what__i:-77 what__is:-128 what__said:75 what__you:90 what_a:44 what_i:59
what_is:-42 what_who:-113 whatever:35 when:-58 when__is:-29 when__stop:-58 when_i:-67 when_it:-28 while:40 who:30
who__you:33 who_are:52 who_is:-54 whole_thing:-28 why:50 why__i:63 will__you:42 will_get:46 winter:-90 winter_$:-90
wipe:128 wipe_my:128 wipers:-78 wipers_$:-65 wish:106 wish_to:106 with__messages:35 with__texts:73 with_my:-58
with_the:98 with_these:37 with_you:-35 withdraw:51 without:-48 woke:-38 work_$:-28 worked:38 works:-32 works_$:-29
worrying:-46 worst:34 would__a:40 would__that:54 would_a:-35 would_like:53 wouldnt:-28 wrecked:39 write:-31
wrong__stop:102 wrong_guy:66 wrong_number:37 wrong_person:75 y:48 y__ahi:-52 y__le:-35 y__me:59 y__mi:55 y_no:56
y_que:38 ya:33 ya__bueno:36 ya__con:95 ya__de:30 ya__dije:145 ya__es:-50 ya__hizo:44 ya__manden:95 ya__me:167
ya__mi:-27 ya__permiso:-30 ya__que:-44 ya__quiero:-120 ya_estoy:-34 ya_estuvo:53 ya_le:49 ya_no:195 ya_parenle:64
ya_pedi:-30 ya_pueden:-43 ya_que:-29 ya_van:-37 yeah:27 yeah_$:53 yeah_i:86 year:57 year_$:-29 yes:104 yes_$:-38
yes__and:52 yes__good:-37 yes__is:43 yes__it:37 yes__me:-34 yes__my:39 yes__please:-45 yes__want:-37 yes_all:161
yes_and:57 yes_but:-29 yes_im:43 yes_lets:-35 yes_please:-77 yes_stop:28 yo:38 yo_lo:-27 you:78 you__a:-51
you__are:27 you__at:-30 you__it:-29 you__keep:-56 you__me:-55 you__my:-35 you__now:-29 you__on:41 you__stop:138
you__texting:63 you__the:119 you__this:-52 you_again:40 you_charged:46 you_dont:75 you_from:-60 you_get:-61
you_got:36 you_have:59 you_keep:68 you_kindly:81 you_need:34 you_never:-46 you_on:43 you_people:57 you_said:-36
you_stop:37 you_take:-98 you_tell:-40 you_text:-80 you_think:88 you_want:-62 your:69 your__again:-121 your__and:-33
your__i:-51 your_place:-41 your_records:41 your_shop:-43 your_system:33 your_texts:138 youre:61
"""
