"""What speaks for and against `accept`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "accept"
BIAS = -109
WEIGHTS = """\
#abad:29 #abal:30 #abla:-33 #ablo:-33 #abou:26 #abra:36 #abso:44 #acep:56 #acer:84 #acio:-41 #aded:-34 #ador:-32
#afic:-30 #afir:74 #afue:37 #agal:147 #agam:55 #agen:101 #agre:36 #agua:-26 #ahea:131 #ahor:-46 #aigo:96 #aint:85
#aiti:-52 #ajaj:-25 #akes:-86 #alab:36 #alar:54 #aler:-30 #algo:-54 #alin:-44 #alio:-37 #alir:29 #alla:185 #ally:-40
#almo:-40 #alre:-46 #alri:116 #also:36 #alto:26 #ambi:39 #ambo:34 #amil:-27 #amos:49 #ampo:-27 #anca:50 #ance:-117
#anda:68 #ando:-95 #anej:-34 #ange:90 #angi:-27 #anin:38 #anme:36 #anni:76 #ante:33 #anti:-37 #anto:-40 #anym:-66
#anyt:-42 #apar:48 #apen:-49 #appe:-62 #appi:42 #appy:69 #apri:-25 #apto:28 #apun:188 #arat:-27 #arav:34 #aren:-29
#arki:36 #arle:44 #arli:-32 #arlo:88 #arly:36 #arma:44 #aron:-197 #arri:40 #arro:-25 #asad:-33 #asel:-30 #asis:-35
#aski:-30 #asta:37 #aste:-25 #atch:-71 #ated:-36 #ates:-35 #athe:-43 #ativ:50 #atte:-56 #augh:35 #aunq:43 #avil:34
#avin:-33 #avis:-36 #away:-41 #awes:37 #aybe:-47 #ayer:-33 #azul:143 #back:-48 #bado:27 #bank:27 #bano:-25 #bara:-27
#bble:45 #bear:33 #bell:56 #bett:65 #biad:39 #biem:-40 #bien:-76 #bios:33 #blan:44 #blem:142 #blue:74 #boat:-34
#body:-50 #book:89 #both:28 #bout:26 #brak:27 #brar:-41 #brat:-28 #bres:55 #brid:-32 #brig:31 #brin:95 #brok:-41
#bscr:-29 #bsol:44 #bsup:71 #buen:50 #butt:35 #bvio:106 #caba:29 #caig:82 #camb:-30 #came:-74 #canc:-97 #cant:40
#card:-29 #caro:-128 #cars:-42 #caso:-25 #cate:26 #cele:78 #cell:31 #cent:-29 #cept:40 #cerl:66 #cert:33 #chan:35
#chas:-31 #chec:-50 #ched:-25 #ches:-27 #chev:113 #chid:62 #choo:-38 #cita:-98 #cito:26 #ckin:-26 #clar:206 #coff:25
#cogi:-31 #cole:39 #come:-94 #como:48 #comp:36 #conf:48 #conm:43 #conv:32 #coul:-36 #coun:83 #cour:90 #crat:-62
#crib:-71 #cual:-46 #cuen:63 #cuer:27 #cues:62 #culp:-33 #cupa:-27 #cupe:38 #dale:208 #dame:90 #damo:32 #darl:54
#date:70 #days:-114 #deal:-85 #dece:-25 #defi:71 #deja:-31 #dejo:-79 #dele:260 #deme:68 #demo:-79 #depe:-45
#desd:-151 #dias:-85 #dida:-29 #didn:-73 #diga:100 #digo:-74 #dije:-31 #dijo:38 #dine:-26 #ding:-33 #dios:31
#disc:-65 #dnes:25 #doke:29 #domi:-30 #done:65 #dont:104 #doub:177 #down:25 #draw:-26 #dude:36 #dura:-34 #each:-29
#eads:-49 #eady:69 #eage:-65 #eale:-29 #eali:-34 #eall:-61 #eals:-47 #eani:38 #ease:-94 #eate:-42 #echo:32 #ecio:31
#ecog:-25 #ecto:84 #edad:26 #edan:124 #edes:-61 #eeke:-36 #eeri:-43 #efin:71 #egar:25 #egas:-45 #egat:-33 #egre:-41
#egui:29 #egun:-38 #egur:-44 #eith:-147 #ejar:35 #ejem:-26 #ejor:-57 #ejos:-35 #eken:-30 #elen:78 #ello:46 #ells:28
#else:-68 #elta:-45 #emas:-27 #embl:-26 #emel:-35 #emin:25 #emor:-36 #emos:76 #enar:-28 #enas:-51 #enci:43 #enda:47
#ende:93 #endo:-44 #ends:-28 #enme:-54 #enor:39 #ensa:-47 #enso:30 #ente:101 #entr:48 #eocu:39 #epen:-55 #eque:36
#equi:-26 #erco:42 #erda:-58 #erde:-31 #erdi:-58 #eren:-30 #eres:96 #erfe:34 #erlo:45 #eron:-102 #erro:44 #erta:69
#erte:25 #eryt:63 #esar:-39 #esch:-67 #escr:-40 #esda:29 #esde:-151 #esen:38 #esim:-27 #esom:37 #espa:-51 #espe:-35
#essi:40 #esta:38 #etan:32 #etim:53 #ette:58 #evar:79 #even:41 #ever:36 #eway:-31 #exac:27 #exce:38 #expl:-64
#fall:56 #falt:77 #fami:-27 #feel:-36 #ffee:25 #ffir:44 #fico:-30 #fier:29 #find:-49 #fine:-65 #fini:63 #firm:205
#flui:-29 #fore:-48 #forg:-112 #free:-44 #from:-42 #fron:64 #full:-29 #gale:119 #game:37 #gand:-26 #gati:-34
#gend:148 #gets:42 #ghte:37 #ghty:151 #ging:-51 #gist:32 #give:-42 #gold:28 #good:-38 #grab:28 #gran:25 #grat:-34
#gree:31 #gres:-38 #grin:28 #gros:-27 #gual:-45 #gues:126 #guie:-37 #guna:34 #guno:-97 #gunt:-42 #guro:-45 #habl:-53
#hace:56 #haga:194 #hago:-58 #hake:-76 #half:-34 #hall:34 #hanc:-32 #hang:46 #happ:68 #hasn:32 #hast:48 #have:-78
#head:66 #hech:35 #hell:35 #here:38 #heve:113 #hich:-40 #hici:-26 #hido:62 #high:29 #hija:34 #hine:31 #hing:78
#hink:-52 #hird:-32 #hite:71 #hold:-25 #hone:-41 #hool:-37 #hora:-78 #hori:-26 #hors:28 #houg:93 #hour:-71 #hous:-28
#hrou:-43 #huev:35 #humo:-86 #hurs:38 #hurt:28 #iado:27 #iben:-30 #ibra:-42 #icey:37 #icie:-38 #idea:167 #ider:36
#idnt:-73 #iemb:-33 #ieme:-38 #iend:-72 #iens:27 #ient:-34 #ierc:48 #iere:-54 #iero:-61 #ierr:41 #igua:-46 #iler:-27
#ille:-27 #imag:-39 #imon:146 #inde:36 #iner:-36 #info:-33 #ingu:-71 #init:72 #inos:-31 #inst:-79 #inte:61 #ints:74
#inut:-42 #iodi:25 #ions:-33 #iper:29 #irma:140 #irme:44 #isco:-29 #iscu:-37 #isnt:-28 #issu:59 #ista:39 #iste:34
#isti:-27 #itch:-38 #itel:66 #ithe:-147 #itin:-47 #itte:27 #ittl:-33 #ives:76 #jala:60 #jale:141 #jalo:80 #jand:-38
#jarl:25 #jaro:-35 #jefe:60 #kend:-30 #kids:-34 #labr:36 #lada:28 #lain:79 #laje:-25 #lama:-31 #lanc:67 #lann:89
#lant:-34 #lapt:28 #larm:57 #laro:203 #last:-110 #late:-43 #ldnt:129 #leas:-106 #leav:-28 #left:-69 #lejo:-30
#lend:44 #lent:40 #lept:-25 #lets:-88 #leva:86 #levo:-72 #lica:-29 #lico:-29 #lide:-31 #lied:-28 #lien:-26 #lier:-33
#lift:26 #lige:26 #ligh:-43 #line:-51 #list:37 #lito:27 #litt:-33 #llaj:-25 #llam:-26 #llas:-34 #lled:26 #llen:-26
#ller:-27 #lmos:-39 #loca:32 #lost:-44 #love:45 #lrea:-46 #lrig:116 #lueg:-150 #luid:-29 #lunc:-26 #lute:44 #made:-32
#mage:-41 #malo:-46 #mane:-39 #mant:28 #mara:29 #marc:-41 #mart:-46 #mati:82 #matt:-25 #mayb:-47 #mber:-25 #mbio:30
#mbla:-25 #mbos:34 #mbsu:71 #mean:47 #mejo:-56 #mela:-51 #mens:-36 #mero:-41 #meta:25 #meti:39 #mier:39 #migh:88
#migo:41 #mill:-65 #mind:53 #mino:-29 #mins:-42 #minu:-42 #miss:106 #modo:66 #mone:-55 #mont:-35 #moot:67 #more:-65
#moro:-34 #most:-42 #moto:-25 #move:-30 #mpla:150 #mpre:-34 #much:-71 #myse:-25 #ncel:-97 #nces:27 #ndal:25 #ndam:108
#ndem:90 #need:-47 #neit:-177 #neja:-25 #nero:-38 #ners:-25 #news:28 #next:26 #nfir:38 #nfri:36 #nged:45 #nger:-26
#nges:30 #ngin:-41 #ngun:-71 #nice:-63 #nigh:-42 #nimo:48 #nine:36 #nite:72 #nmig:43 #nobo:-25 #noma:30 #none:-42
#note:26 #nque:36 #nsaj:-29 #nsid:35 #nste:-70 #nsub:-27 #ntem:74 #nten:69 #ntes:45 #ntit:-33 #nton:28 #ntre:-40
#ntro:56 #ntua:51 #nuev:36 #numb:-50 #nven:26 #nymo:-66 #nyth:-37 #obbl:39 #oble:123 #obod:-25 #obra:-44 #obre:69
#obvi:106 #oday:-54 #odem:-35 #oder:-50 #odre:-30 #olut:44 #omas:40 #omet:37 #ompl:115 #ompr:-50 #once:41 #onda:26
#oner:-29 #oney:-51 #onfi:38 #onga:-25 #onge:-26 #onmi:43 #onsi:27 #onte:31 #onth:-35 #onve:26 #ooki:-39 #ooth:67
#open:25 #oral:62 #orde:41 #orev:-47 #orge:-42 #orgo:-64 #orks:-80 #orra:-29 #orre:49 #orry:-57 #orse:-70 #oser:-27
#ospo:-30 #otal:32 #othi:49 #otra:54 #ough:76 #oull:26 #ound:-44 #oung:25 #ount:75 #ours:63 #oved:40 #paci:-43
#pala:36 #pana:25 #para:-33 #parc:30 #park:29 #pasa:-89 #pase:-56 #pass:-73 #past:-30 #pena:-78 #pend:-48 #peni:31
#pens:-34 #pera:26 #perd:-93 #pere:-26 #perf:34 #pero:36 #pesi:-27 #phon:-49 #pien:27 #pier:48 #ping:27 #plai:79
#plan:124 #plea:-99 #plic:-38 #pobr:29 #poco:-32 #pode:-85 #podr:-37 #pone:-33 #pong:-38 #port:-29 #pose:28 #posp:-30
#pped:-34 #ppen:-44 #ppie:42 #ppos:29 #preg:-42 #preo:38 #pret:-27 #pric:42 #prob:142 #ptop:28 #pued:-44 #pues:192
#punt:235 #purr:39 #puse:31 #push:-25 #qued:-78 #quej:103 #quem:-27 #quit:-36 #rade:-58 #rado:-34 #raff:-27 #rafi:-30
#rage:-26 #rail:-26 #rake:30 #rale:61 #rand:28 #rapi:27 #rara:-29 #raro:-52 #rasa:-45 #rase:-35 #ratc:-62 #rate:-36
#rath:-41 #rati:-28 #ravi:34 #raya:-25 #rcol:40 #rdad:-26 #rden:32 #rdid:-39 #rdon:-40 #read:55 #reag:-66 #real:-76
#rear:35 #reat:-29 #reco:-34 #rect:80 #rega:-43 #regr:-41 #regu:-51 #remo:-36 #rent:-50 #reoc:38 #resa:74 #resc:-68
#rett:-25 #reve:-33 #rfec:34 #rget:-42 #rgot:-64 #ribe:-40 #rice:40 #ride:25 #ries:46 #righ:32 #rind:28 #ring:46
#rise:27 #rkin:32 #rlie:-32 #rmad:32 #rmat:86 #road:-36 #robl:132 #roca:44 #roke:-45 #roll:45 #rong:-62 #ront:52
#roug:-25 #rrec:89 #rses:35 #rtas:26 #rted:25 #rtes:-44 #ruck:59 #rued:-25 #runk:25 #runn:-71 #ryth:63 #saba:27
#sado:-39 #safe:25 #saje:-25 #sale:-76 #sali:-34 #saro:-33 #sati:28 #scho:-37 #scra:-82 #scri:-72 #scul:-33 #seda:128
#sela:-32 #self:-35 #seno:53 #sent:29 #shak:-78 #shal:34 #shin:35 #side:62 #sign:124 #sigo:-26 #simo:115 #sipi:84
#sist:-52 #skin:-31 #skip:-33 #slep:-25 #slid:-31 #slow:-25 #smok:28 #smoo:67 #sold:-40 #solu:44 #some:38 #sorr:-65
#soun:-34 #spac:-43 #sper:-36 #spon:-43 #spos:25 #ssed:-30 #ssue:59 #stam:-42 #stan:-37 #star:47 #stas:41 #stat:-26
#stea:-80 #stee:-43 #ster:-26 #stil:34 #stir:-41 #stop:-115 #stor:35 #stra:-39 #subs:-29 #suci:-25 #suen:26 #sues:67
#supu:46 #sure:124 #swap:-26 #swit:-31 #tain:29 #take:-72 #talk:-38 #tamb:69 #tamo:-45 #tant:-30 #tard:-26 #tare:135
#tari:27 #tart:-58 #tcha:47 #tche:-37 #tead:-70 #tede:-58 #teer:-49 #tely:115 #teme:122 #tend:-29 #tent:33 #terd:-28
#tere:121 #text:-100 #that:37 #them:-61 #then:79 #ther:-146 #they:-49 #thir:-36 #this:-31 #thou:81 #thre:-28
#thro:-39 #thur:37 #tien:-28 #time:44 #ting:-74 #tire:-28 #tivo:31 #toda:-65 #todo:138 #tomo:42 #tonc:31 #took:-39
#tory:40 #tota:32 #trad:-51 #trae:31 #traf:-57 #trai:-28 #tras:-34 #trat:-35 #treg:-28 #tren:-34 #troc:44 #truc:56
#tter:59 #tual:45 #tues:-106 #turn:-39 #twis:108 #uand:43 #uant:-49 #ubsc:-29 #ucho:-39 #ucio:-25 #ueda:-120
#uede:-129 #uedo:103 #uego:-141 #ueja:96 #uelt:-38 #uena:48 #uent:58 #uerd:27 #uert:43 #uess:126 #uest:76 #uevo:76
#uien:-74 #uiet:40 #uite:-26 #uldn:129 #ulpe:-32 #umbe:-52 #umbs:31 #unni:-71 #unos:-50 #unqu:40 #unsu:-27 #unte:64
#unto:102 #untu:47 #upad:-45 #uper:27 #upue:46 #urrs:39 #urse:91 #usta:81 #uste:-79 #usto:-77 #utel:44 #utte:37
#vale:-73 #vamo:137 #varl:67 #vega:-45 #vemo:129 #venc:38 #vend:-48 #verd:-25 #vere:99 #vers:-25 #very:33 #vibr:-47
#vide:-37 #viej:27 #vien:27 #vill:32 #ving:-67 #volv:-30 #vuel:-40 #walk:31 #wasn:-33 #week:-112 #well:51 #went:-48
#weso:37 #when:-178 #whic:-39 #whit:71 #wild:35 #will:84 #wist:108 #witc:-31 #wobb:39 #wont:-31 #work:-123 #worr:34
#wors:-108 #woul:31 #wron:-62 #xact:27 #xcel:52 #xpla:-53 #xtos:25 #yeah:29 #yest:-28 #ymor:-66 #youl:26 #ysel:-25
#ythi:27 %again_later:-128 %again_later%agree:81 %again_later%car:46 %again_later%car_part:38 %again_later%doubt:37
%again_later%gone_car:66 %again_later%lift:-26 %again_later%message:-106 %again_later%money:72
%again_later%odometer:27 %again_later%opening:-36 %again_later%place:29 %again_later%question:55
%again_later%season:36 %again_later%staff:38 %again_later%start_again:-40 %again_later%thanks:33
%again_later%wrong_one:46 %agree:542 %agree%bad:-55 %agree%bring:316 %agree%busy:76 %agree%call_off:-118
%agree%car:94 %agree%doubt:148 %agree%elsewhere:134 %agree%fails:59 %agree%family:91 %agree%gone_car:144
%agree%how_long:224 %agree%leave_me:28 %agree%lift:101 %agree%machine:30 %agree%meaning:34 %agree%message:-74
%agree%noise:86 %agree%odometer:58 %agree%on_way:160 %agree%opening:50 %agree%phone:98 %agree%question:105
%agree%season:64 %agree%shift_it:64 %agree%smoke_smell:-38 %agree%staff:207 %agree%start_again:70 %agree%thanks:-77
%agree%wrong_one:84 %away:-133 %away%bring:76 %away%call_off:56 %away%car_part:46 %away%doubt:-64 %away%how_long:30
%away%leave_me:66 %away%noise:43 %away%on_way:127 %away%refuse:55 %away%smoke_smell:25 %away%start_again:40
%away%thanks:41 %away%wrong_one:44 %bad:-110 %bad%call_off:66 %bad%car_part:-78 %bad%doubt:-27 %bad%meaning:132
%bad%money:-51 %bad%on_way:-41 %bad%question:-36 %bad%refuse:246 %bad%staff:-35 %bad%start_again:-26 %bring%busy:53
%bring%call_off:43 %bring%car:44 %bring%car_part:70 %bring%family:57 %bring%gone_car:39 %bring%how_long:-47
%bring%leave_me:-50 %bring%meaning:29 %bring%odometer:-37 %bring%on_way:-35 %bring%phone:42 %bring%refuse:46
%bring%thanks:100 %bring%who:-25 %bring%wrong_one:54 %busy:26 %busy%car:27 %busy%on_way:-27 %busy%refuse:-33
%busy%staff:31 %busy%start_again:40 %busy%thanks:31 %call_off:-127 %call_off%car:-42 %call_off%do_it:70
%call_off%doubt:44 %call_off%elsewhere:25 %call_off%fails:-105 %call_off%family:-45 %call_off%how_long:69
%call_off%leave_me:90 %call_off%lift:111 %call_off%money:-52 %call_off%odometer:-26 %call_off%on_way:93
%call_off%opening:-31 %call_off%pay_day:-36 %call_off%phone:-39 %call_off%place:-27 %call_off%question:110
%call_off%refuse:196 %call_off%shake:-37 %call_off%shift_it:118 %call_off%wrong_one:44 %car:61 %car%car_part:40
%car%elsewhere:64 %car%fails:28 %car%gone_car:-95 %car%noise:40 %car%shift_it:33 %car%start_again:34 %car_part:-142
%car_part%do_it:57 %car_part%money:-34 %car_part%odometer:49 %car_part%on_way:36 %car_part%place:31
%car_part%question:91 %car_part%season:34 %car_part%shake:49 %car_part%shift_it:37 %do_it:-119 %do_it%elsewhere:-32
%do_it%fails:-31 %do_it%family:-29 %do_it%gone_car:51 %do_it%how_long:-81 %do_it%leave_me:65 %do_it%message:61
%do_it%money:-67 %do_it%on_way:-37 %do_it%place:37 %do_it%question:-99 %do_it%refuse:103 %do_it%shift_it:52
%do_it%staff:-26 %do_it%wrong_one:-81 %doubt%gone_car:-51 %doubt%how_long:71 %doubt%leave_me:27 %doubt%lift:36
%doubt%message:-46 %doubt%odometer:-31 %doubt%pay_day:-33 %doubt%place:41 %doubt%question:-57 %doubt%refuse:-143
%doubt%staff:29 %doubt%wrong_one:-41 %elsewhere:-48 %elsewhere%fails:28 %elsewhere%place:33 %elsewhere%question:62
%elsewhere%refuse:44 %elsewhere%shift_it:26 %elsewhere%wrong_one:25 %fails%gone_car:36 %fails%how_long:-35
%fails%place:29 %fails%refuse:-40 %fails%start_again:-45 %fails%thanks:39 %family:-40 %family%how_long:29
%family%odometer:56 %family%on_way:-28 %family%question:51 %family%refuse:-34 %family%shift_it:47
%family%wrong_one:-33 %gone_car:-158 %gone_car%how_long:-26 %gone_car%money:82 %gone_car%question:95
%gone_car%refuse:62 %gone_car%season:-26 %gone_car%staff:-42 %gone_car%start_again:26 %gone_car%wrong_one:69
%how_long:-107 %how_long%leave_me:35 %how_long%money:35 %how_long%on_way:-67 %how_long%opening:35 %how_long%place:-64
%how_long%question:132 %how_long%refuse:-45 %how_long%shift_it:-64 %how_long%thanks:-33 %leak:-43 %leave_me:-140
%leave_me%money:42 %leave_me%on_way:74 %leave_me%refuse:68 %lift:32 %lift%opening:-27 %lift%question:-32 %machine:-90
%machine%refuse:-41 %meaning%question:-53 %meaning%refuse:127 %message:-38 %message%phone:25
%message%start_again:-133 %message%thanks:45 %message%wrong_one:-32 %money:-70 %money%on_way:67 %money%place:-36
%money%refuse:-41 %money%shift_it:64 %money%smoke_smell:-86 %money%start_again:35 %money%wrong_one:-25
%noise%refuse:60 %noise%start_again:-25 %odometer:-45 %odometer%on_way:-26 %odometer%question:33 %odometer%refuse:-45
%on_way:-112 %on_way%place:-37 %on_way%question:82 %on_way%refuse:85 %on_way%staff:30 %on_way%thanks:87
%on_way%who:-26 %on_way%wrong_one:46 %opening:-59 %opening%question:57 %opening%shift_it:-29 %pay_day:-112
%pay_day%question:-25 %pay_day%refuse:-35 %pay_day%season:-42 %phone:-190 %phone%refuse:-63 %place:-98
%place%question:42 %place%shift_it:61 %place%staff:37 %place%start_again:56 %question:-195 %question%refuse:139
%question%season:26 %question%start_again:84 %question%thanks:34 %question%who:-86 %question%wrong_one:33
%refuse:-127 %refuse%shake:-38 %refuse%shift_it:54 %refuse%staff:-47 %refuse%start_again:46 %refuse%wrong_one:61
%season:-104 %shake:-123 %shift_it:-199 %shift_it%start_again:-37 %shift_it%thanks:26 %smoke_smell:-105 %staff:-41
%staff%thanks:28 %staff%wrong_one:-89 %thanks:-50 %who:-147 %wrong_one:-139 @?:-47 @after_visit:311
@after_visit_cant_complain:61 @after_visit_not_really:-40 @car:455 @confirm:150 @confirm_:66 @confirm_still_good:37
@confirm_stop:-1002 @confirm_stop_si:-75 @confirm_thumbsup:55 @day:-94 @later:-93 @nothing:-485 @odometer:-182
@offers:-915 @reading:-77 @time:-112 @times:-47 @walk_in:150 @walk_in_will_do:37 ^_$:128 ^_a:-129 ^_absolutely:44
^_aceptan:-30 ^_affirmative:32 ^_afirmativo:54 ^_after:-29 ^_ahi:254 ^_al:30 ^_all:97 ^_alright:61 ^_alta:-25
^_am:-28 ^_ambos:25 ^_ando:-53 ^_any:-56 ^_appreciate:-62 ^_apunteme:66 ^_are:-71 ^_as:-39 ^_asap:-27 ^_at:-30
^_ay:-32 ^_be:-146 ^_better:43 ^_blue:48 ^_both:47 ^_bring:42 ^_buen:-25 ^_bueno:52 ^_call:-37 ^_can:-52 ^_cancel:-45
^_cant:88 ^_changed:-27 ^_chevere:94 ^_claro:206 ^_como:146 ^_confirmado:34 ^_confirmo:63 ^_correct:28 ^_correcto:36
^_could:-85 ^_count:80 ^_cual:-68 ^_cuando:-48 ^_cuanto:-186 ^_dale:177 ^_de:180 ^_definitely:65 ^_deme:-30
^_depende:-25 ^_desde:-43 ^_does:-25 ^_el:-108 ^_en:-129 ^_es:-61 ^_esta:119 ^_estoy:-69 ^_eta:-58 ^_everything:85
^_excelente:31 ^_fine:139 ^_free:29 ^_fri:-31 ^_friday:-57 ^_go:143 ^_got:-31 ^_gracias:-31 ^_hagale:123 ^_half:-52
^_happy:27 ^_have:-35 ^_hay:-71 ^_heck:39 ^_hit:-26 ^_hm:-32 ^_hmm:-52 ^_how:-164 ^_hoy:-59 ^_id:145 ^_if:68
^_ill:-25 ^_info:-25 ^_is:-193 ^_just:-26 ^_kids:-36 ^_la:51 ^_late:-25 ^_let:-63 ^_lets:-39 ^_listo:41 ^_llevo:-29
^_lol:-32 ^_luego:-67 ^_mal:-38 ^_manana:-116 ^_mas:-47 ^_me:106 ^_meh:-76 ^_mi:-29 ^_might:87 ^_min:-43 ^_monday:-46
^_muy:54 ^_nah:-31 ^_need:-53 ^_neither:-175 ^_nel:-31 ^_next:-32 ^_ninguno:-88 ^_none:-32 ^_nop:-56 ^_nos:33
^_not:-178 ^_of:100 ^_ok:293 ^_olvide:-32 ^_on:-51 ^_once:-25 ^_one:-37 ^_orale:62 ^_para:-73 ^_paso:-40 ^_perdon:-25
^_perfect:27 ^_perfecto:80 ^_pesimo:-33 ^_please:113 ^_por:83 ^_puedo:-42 ^_que:-225 ^_quedo:120 ^_quiero:-53
^_rain:35 ^_re:25 ^_reschedule:-46 ^_running:-43 ^_runs:34 ^_sale:246 ^_saturday:-40 ^_se:-108 ^_sedan:35 ^_see:189
^_seguro:28 ^_should:-31 ^_si:680 ^_sign:67 ^_sigue:69 ^_simon:127 ^_sin:78 ^_sip:177 ^_smooth:35 ^_sold:45
^_something:-47 ^_sounds:73 ^_still:156 ^_stop:-128 ^_sure:281 ^_ta:42 ^_tengo:-41 ^_thank:-203 ^_that:191
^_there:-39 ^_thumbsup:71 ^_thurs:-46 ^_thursday:-132 ^_tiene:-27 ^_tienen:-54 ^_todo:189 ^_tomorrow:-32 ^_trae:-28
^_truck:39 ^_tuesday:-40 ^_va:159 ^_voy:-50 ^_what:-268 ^_when:-51 ^_whenever:-27 ^_where:-40 ^_which:-60 ^_white:43
^_who:-48 ^_why:48 ^_will:37 ^_wont:-54 ^_works:163 ^_would:-44 ^_wouldnt:83 ^_y:54 ^_ya:25 ^_ye:96 ^_yep:218
^_yes:262 ^_yo:-37 a_$:31 a__day:-29 a__en:34 a__for:34 a__hora:-52 a__late:-36 a__of:-41 a__one:-50 a__out:33
a__sale:-53 a__si:-81 a__to:35 a__weekend:-25 a_como:-64 a_fallar:25 a_good:-26 a_hacer:-32 a_huevo:31 a_little:-38
a_nice:-43 a_plan:31 a_poder:-46 a_primera:28 a_que:-25 a_ver:-37 about:27 about_it:-37 absolutely:44 absolutely_$:36
add:45 adelante:42 adelante_$:36 affirmative:32 afirmativo:54 afuera:37 afuera_$:44 agarro:-32 agarro_el:-29
agendeme:128 agendeme_$:124 ahead:131 ahi:328 ahi_$:-151 ahi__caigo:45 ahi__vemos:69 ahi_estare:109 ahi_estoy:79
ahi_les:41 ahi_me:30 ahi_nos:69 ahi_voy:89 ahorita:-26 al:54 al_cien:49 al_pobre:29 al_viernes:-26 alarma:38
alarms:27 algo:-28 all__for:63 all__what:26 all_good:119 all_set:-42 alla:130 alla_$:44 almost:-39 already:-46
alright:-35 alright_$:-31 also:36 alta:-44 am:37 am_i:33 ambos:34 an:39 an_appointment:98 an_hour:-31 and:72
and__you:72 and_early:35 and_it:-25 and_no:27 and_out:27 and_thank:60 anda:28 ando:-49 ando_bien:-54 ando_por:-26
another:-49 antes:49 any__next:35 any_day:37 anymore:-66 anymore_$:-64 anything:-37 apenas:-49 appointment_$:67
appreciate_it:-42 appreciate_you:-27 apunteme:97 are:-30 are_you:-31 arm:108 arm_$:66 as:78 as_butter:30 as_well:38
asi:-100 asi_$:-53 asi__bien:-60 asi_es:52 ask:26 ask_me:51 asking:-30 at:-35 at_$:-56 at__you:25 at_all:52 at_if:31
at_it:27 at_the:-67 at_work:-28 atras:46 aunque:40 avisar_$:-29 away:-41 away_$:-39 awesome:37 ay:-30 ayer:-33
azul:126 azul_$:38 back:-44 bad:130 bad_$:45 bank:29 barato:-26 be:-94 be__at:-44 be__by:-63 be__in:-72 be_a:-32
be_by:-28 be_happier:35 be_late:-38 be_ready:-29 be_there:120 beat__to:-27 been__to:50 before_$:-49 before_i:-25
bells:45 bells_on:34 bet:42 better:65 better_$:27 better_than:36 bien:-138 bien_$:-47 bien_el:-28 bien_gracias:27
bien_lo:26 blanca:71 blanca__la:33 bless:-33 blue:74 blue_one:27 boat:-25 book:143 book_it:41 book_me:98 both:33
both__them:41 both_of:41 bright:35 bright__early:35 bright_and:35 bring:97 bring__in:42 bring_it:96 btw:91 buena:28
bueno:53 but__much:-100 but__need:66 but_dont:25 but_how:-82 but_i:25 but_ill:35 but_it:-66 but_no:-25 but_the:-89
but_what:32 but_yes:41 butter:37 butter_$:27 by:65 c:112 caigo:87 caigo_$:95 calendar:41 call_me:-28 cambiado:39
cambieme:-30 cambieme_la:-26 cambios:33 came:-63 came_up:-34 camino:-29 can:-120 can__come:-32 can__do:-70
can__make:114 can__me:-52 can_i:26 can_text:-57 can_we:-57 cancel:-137 cancel_it:-144 cancel_my:46 cancel_the:-43
cancelen:54 cancelled:25 cant:28 cant__in:-40 cant__it:-107 cant_come:-65 cant_complain:63 cant_do:-71 cant_make:-65
cant_say:102 cant_wait:102 car:-103 car_is:-57 card:-29 caro:-114 caro_$:-40 carros:-27 cars:-42 cars_$:-27
casi_llego:-27 center:-47 chance:-29 change_$:31 change_my:-26 changed:37 changed_$:58 changed__mind:-30
changed__my:31 changed_my:-32 changed_on:30 changes:31 check:-28 check_$:-27 chevere:92 chido:62 cien:49 cien_$:42
cita:-80 cita_$:-88 claro:208 claro_el:46 cobraron:-29 coffee:26 come:-91 come_friday:-34 come_in:-43 coming_$:-45
coming__the:28 como:57 como__las:-28 como_a:-30 como_la:27 como_no:267 como_nuevo:39 como_sale:-53 como_si:-45
complain:63 complain_$:61 complaints:79 con__gusto:29 con_el:47 con_los:-28 con_ustedes:-30 confirmado:25
confirmo_$:-29 conmigo:43 conmigo_$:52 contento:29 correct:39 correcto:50 could:-69 couldnt:42 couldnt__happier:35
count:115 count__in:107 count__out:-31 count_me:76 course:99 creek:27 cual:-60 cual__el:-42 cual_es:-31
cualquier__de:29 cuando:43 cuanto:-28 cuanto_$:-125 cuanto__sale:-27 cuanto_cuesta:66 cuanto_sale:-50 cuanto_se:31
cuanto_va:-26 cuanto_vale:-41 cuente:48 cuente_conmigo:35 cuenten:28 cuesta:63 cuesta_$:43 da:-26 dale:187 dale_el:35
darle:30 date:60 date_$:61 day:47 day_$:-40 day__the:25 day__week:33 days:-35 de__dos:-63 de__si:-32 de_atras:29
de_la:-47 de_los:-40 de_manana:-34 de_maravilla:39 de_mi:63 de_que:-56 de_una:223 de_verdad:-30 definitely:71
dejaron:-30 dejo:-79 del:29 deme:-25 depende:-26 desde:-151 desde__lo:-32 desde_ayer:-27 desde_que:-88 dia:-29
dia_$:-52 dias:-84 dias_$:-32 did:-53 did__last:-59 did_it:-25 did_that:-37 did_you:-32 didnt:-73 diga:66 digo:-72
dijo:38 dios:31 dios_me:31 dios_quiere:-40 do:165 do_$:227 do__but:-26 do__day:-28 do__do:-45 do__get:-35
do__guys:-26 do__instead:-36 do__know:-27 do__need:-50 do__work:-29 do_friday:-26 do_i:-81 do_it:156 do_monday:-36
do_you:-123 does_it:-31 done:72 done_$:44 done_last:-25 dont:104 dont__it:-27 dont__my:64 dont__you:-28 dont_know:-27
dont_need:-25 dont_see:58 dont_think:-34 dont_want:-33 door:-33 door_$:-28 dos:-43 down:100 down_$:159 down_on:-36
down_the:-40 drive:-69 drive_to:-63 drives:78 drives_like:70 dude:36 dura:-30 each:-25 earlier:-32 early_$:41
either:30 el_$:-27 el__a:94 el__antes:34 el__cuanto:44 el__despues:51 el__dia:-26 el__el:27 el__en:44 el__le:37
el__no:-43 el__pero:-45 el__que:31 el__se:-37 el__si:-72 el__va:-32 el_azul:120 el_carro:44 el_de:31 el_lunes:42
el_martes:-36 el_miercoles:27 el_otro:28 el_ruido:26 el_sedan:52 el_seguro:-41 el_trabajo:42 el_tren:-26 else:-43
en_$:-66 en__dias:-39 en__lista:59 en__sale:-32 en__tarde:33 en__trabajo:27 en_camino:-32 en_el:49 en_la:91
en_orden:40 en_pie:129 en_unos:-42 end:32 end_$:31 entonces:31 entonces_$:29 entrance:28 entro:44 entro_$:49 es:-60
es_$:30 es__si:-35 es_gratis:-25 es_la:37 es_malo:-28 esa:-26 ese_servicio:26 espero:-50 espero_$:-52 esta:-48
esta__caro:-62 esta_bien:74 esta_bueno:32 esta_perfecto:-29 estamos:-41 estare:128 estaria:-63 estas:47 este:-42
estoy_$:48 estoy_ahi:-29 estoy_bien:-90 eta:-58 even:30 every:-47 everything:63 everything_$:-27 everything_was:50
excelente:42 explain:-44 fallar:25 falta:40 falta_$:45 far:48 favor_$:-86 fierro:36 fierro_$:37 fin:-26 find:-55
fine:-62 fine_$:-107 fine__it:-28 fine__me:56 fine_with:36 fine_you:32 firme:39 fix:-41 fix_it:-50 fluid:-27
for__day:27 for__reminder:34 for_friday:-31 for_it:104 for_that:-50 for_thursday:80 for_tomorrow:44 forever:-47
forever_$:-42 forget:-42 forgot:-64 free__my:33 freno:-27 frenos:32 fri:-64 friday_$:-50 friday_afternoon:51
friday_at:25 fridge:29 from:-42 front:65 fuera:-36 fui:-51 full:-28 get:133 get__done:164 get__in:35 get_it:99
get_there:-35 gets:42 give:-37 go:174 go__it:74 go__the:-27 go_ahead:146 go_away:-26 go_for:75 go_on:28 good:-41
good_$:-114 good__the:27 good_for:43 got_any:-47 got_it:58 got_to:31 grab:27 gracias__avisar:-25 gracias__todo:-52
gracias_por:-84 grand:32 grand_$:32 gratis:-29 great_$:25 great__you:-60 great_job:26 guess:126 guess__is:26
gustaria:91 gusto:-66 guy:-33 guys_have:-27 ha:35 hablan:-25 hablo:-32 hablo_$:-31 hacerlo:51 hacerlo_$:39
haciendo:-31 had:-85 had_to:-55 hagale:123 hago:-58 hago_$:-52 half:-31 happier:42 happy:71 has:65 hasnt:32 hasta:48
have:-86 have__call:27 have__wrong:-38 have_a:-112 have_the:-52 have_to:40 hay:34 hay__si:-38 hay_problema:82
hay_que:49 he:35 heads:-45 heads_up:-45 hecho:43 hecho_$:49 heck:50 hell:43 hicieron:-26 high:30 hija:34 history:31
hit:-30 hm:-32 hmm:-52 hora:-59 hour:-45 hours:-26 how:-77 how__is:-123 how__will:-34 how_do:-41 hoy:-55
hoy_mismo:-40 huevo:35 huh:26 huh_$:27 humo:-82 humo_$:-60 hurt:28 i:43 i__a:-48 i__an:87 i__both:-25 i__come:-30
i__do:-34 i__off:27 i__see:37 i__so:113 i__there:-41 i__thursday:-25 i__you:-45 i_be:-28 i_cant:-52 i_come:-49
i_did:30 i_do:93 i_forgot:-26 i_get:-53 i_go:-40 i_guess:96 i_had:-27 i_have:-26 i_make:133 i_need:-33 i_should:43
i_sold:-38 i_want:34 i_wont:28 i_work:-26 id:175 id__a:30 id__to:72 id_be:50 id_like:44 id_rather:-31 idea:162
idea_$:150 if__like:-90 if_i:37 if_you:55 igual:-36 ill:200 ill__by:26 ill__it:-27 ill__on:-40 ill__over:45
ill__the:28 ill__there:227 ill_be:145 ill_come:39 ill_need:31 ill_pass:-34 ill_stop:42 ill_swing:34 im_all:-49
im_coming:46 im_down:209 im_fine:-142 im_good:-176 im_in:106 im_not:-49 im_ready:141 imagen:-38 in_$:158 in__out:27
in__you:32 in_and:28 in_law:28 info:-26 instead:-70 instead_$:-59 interesa:95 interesa_$:53 interest:-41
interested:67 interested_$:73 ir:-55 ir_$:-65 is:-111 is__a:27 is__address:32 is__for:28 is__ok:-32 is__really:-30
is__yes:37 is_a:95 is_alright:-57 is_been:-31 is_fine:-66 is_good:83 is_history:35 is_it:-80 is_my:-33 is_off:-49
is_ok:-40 is_right:37 is_that:-57 is_the:60 is_this:-40 is_up:-30 is_your:49 ish:58 ish_$:49 isnt:-28 issues:67
it_$:38 it__a:47 it__and:-40 it__at:-44 it__is:-26 it__like:-25 it__me:42 it__needed:47 it__next:-33 it__on:37
it__time:43 it__under:33 it__up:-26 it__you:35 it_a:31 it_anymore:-30 it_be:-65 it_done:58 it_is:160 it_ok:-26
it_on:85 it_really:-26 it_shakes:-69 it_to:-72 jaja:69 jaja_si:38 jala:58 jale:141 jale_$:151 jefe:60 jefe_$:37
jueves__la:26 jueves_si:-29 just__i:-28 k:-30 k_$:-28 keep_me:44 kids:-33 know:-27 know_$:-30 know_it:53 know_you:-43
la:33 la__ahi:29 la__esta:-30 la__la:27 la__no:-61 la__o:32 la__pero:30 la__por:26 la__que:55 la_alarma:37
la_blanca:71 la_cita:-74 la_lista:56 la_otra:61 la_puede:-25 la_troca:44 laptop:28 laptop_$:28 las_$:49
las__llego:-25 las_si:-53 last:-108 last_week:-73 late_$:115 later:-29 law:28 le:-97 le__a:27 le_caigo:47 le_digo:-30
le_sale:-86 left:-69 lejos:-30 les:-50 less:40 let:-72 let_me:-46 lets:-91 lets__it:50 lets__the:-37 lets_do:62
lets_get:76 lets_out:-46 lets_say:-47 lied:-28 lied_to:-27 lift:26 light:-31 like__plan:31 like_a:32 like_to:34
lista:55 listo:-46 listo_$:-73 little:-33 little_late:-34 live__the:29 llego_en:-51 llevarlo:55 llevarlo_$:63
llevo:-72 lo:-26 lo__asi:-32 lo_dejo:-64 lo_hago:-41 lo_que:58 lo_recogi:-30 lo_vendi:29 located_$:27 lol:62
long_$:51 long_will:-33 look:42 look_$:27 los:-86 los_dos:-54 los_frenos:36 los_ninos:-28 lost:-44 lot_$:26 love:52
luego:-150 luego_$:-73 luego_les:-41 lunes_$:-59 lunes_a:39 made:-32 make_it:-105 mal:-124 mal_$:-89 malo:-41
manana__la:29 manejando:-42 manejando_$:-28 maravilla:39 martes:-42 martes__la:26 martes__le:-61 martes_en:28
martes_pero:-63 mas:-78 mas__si:-32 mas_barato:-26 mas_de:-32 maybe:-47 me:58 me_$:101 me__a:-27 me__como:-52
me__con:-29 me__cuanto:45 me__de:-55 me__el:-62 me__it:28 me__la:-42 me__quejar:53 me__the:48 me__un:-27 me__una:-31
me__y:-39 me_again:-74 me_agarro:-36 me_es:-30 me_gustaria:91 me_gusto:-72 me_in:137 me_interesa:117 me_la:-34
me_late:250 me_off:-44 me_olvida:43 me_out:-42 me_parece:48 me_puedo:68 me_queda:-59 me_sale:-57 me_to:43 me_twice:30
me_up:135 me_va:-41 me_what:28 meaning:38 meh:-78 mejor:-56 mero:-26 mi_carro:-26 mi_cita:-34 mi_hija:34 miercoles:40
miercoles_o:34 miercoles_que:36 might:88 might__well:113 might_as:113 millaje:-25 millas:-39 millas_$:-38 min:-203
min_$:-107 mind:28 mins:-42 mismo_$:25 mismo_dia:-27 mismo_si:-25 miss:111 miss_it:127 modo:73 monday_$:-36
monday__be:-34 monday_instead:-40 money:-51 money_$:-26 month:-32 more_$:25 mother__law:34 mother_in:34 moved:28
much__it:-104 much_is:-98 muchas:-27 muchas__por:-44 muchas_gracias:-27 mucho:-38 muy:-41 muy_bien:35 muy_caro:-41
muy_mal:-26 my__one:-26 my__will:43 my_arm:88 my_end:44 my_mind:-30 my_mother:25 my_way:-27 myself:-25 n:-26
nada_mas:25 nah:-31 need:-59 need_$:-36 need_a:43 need_to:-50 neither:-177 neither_$:-85 nel:-31 never:-27 new:81
new_$:59 news:28 next:26 ni:-68 ni_modo:73 nice:-59 night:-66 night_$:-87 night_and:26 nine:41 nine_$:29 ninguna:26
ninguno:-96 ninguno__los:-41 ninguno_de:-41 ninos:-31 ninos_$:-27 no:-115 no_$:-74 no__a:-100 no__at:52 no__bien:-112
no__conmigo:-49 no__el:-32 no__good:-34 no__gusto:-72 no__hago:-40 no__here:72 no__interesa:-93 no__ir:-34 no__is:-69
no__la:-26 no__ninguna:25 no__pero:-25 no__preocupe:40 no__problema:83 no__puedo:68 no__que:-38 no__that:93
no_complaints:79 no_gracias:-48 no_hay:109 no_im:-41 no_issues:67 no_it:-54 no_jala:27 no_la:27 no_me:-126 no_more:53
no_podre:-30 no_problem:102 no_puedo:-57 no_quedo:-60 no_quiero:-32 no_se:114 no_sigue:-73 no_tengo:26 no_thanks:-33
no_that:-35 no_to:121 no_voy:-137 no_what:-30 no_worries:50 nomas:30 none:-35 none__them:-31 none_of:-32 noon_$:33
nop:-56 nop_$:-56 nos:134 nos__manana:51 nos_vemos:140 not:-37 not_$:219 not__in:-26 not__yet:-72 not_a:122
not_coming:-72 not_interested:-38 not_ok:-32 not_really:-50 not_sure:-152 not_to:32 now:-128 now_$:-103 nuevo:44
nuevo_$:31 number:-46 number_$:-37 o:58 of:-55 of_course:100 of_the:-25 of_you:-25 off:-123 off_$:-30 off__now:-46
off__schedule:-42 off_the:-45 oh__another:-29 oil:44 oil_$:29 ok:-37 ok_$:-327 ok__drive:-63 ok__el:38 ok__i:28
ok__the:-65 ok_but:38 ok_el:66 ok_friday:37 ok_to:-92 olvida:43 olvide:-32 on:59 on_$:121 on__end:44 on__way:-59
on_me:36 onda:36 one:-56 one_$:-45 one_with:29 opening:39 or:56 orale:62 orden:40 other:26 otra:50 otra_semana:30
out:-114 out_$:-115 over_$:27 over_here:-48 own:-45 palabra:36 para:-37 para__de:25 para__si:-45 para_el:-41
para_eso:25 para_que:-32 para_un:-27 parking:36 parking_$:49 part:-25 pasa:-90 pasa__no:-38 pasa_si:-85 pasela:-26
pass:-74 pass_$:-35 past_$:-26 pay:45 pedal:-29 pedi__en:31 pedi_permiso:31 pena:-28 perdida:-33 perdon:-37
perfect:-26 perfecto:56 permiso:26 permiso__el:31 permiso_en:31 pero:86 pero__me:40 pero__no:38 pero__que:57
pero_cuanto:-108 pero_el:-31 pero_hasta:26 pero_le:-57 pero_que:30 pero_si:27 pero_ya:34 pesimo:-27 phone:-54
phone_$:-44 pie:122 pie_$:59 pienso:27 pierdo:29 plan:44 plan_$:51 planning:70 planning__it:70 planning_on:70
please:-118 please_$:-252 please__me:-30 please__thank:71 please_and:58 please_do:135 please_dont:58 please_take:-46
pobre:29 podemos:-35 poder:-49 podre:-30 pop:27 por:28 por__no:216 por_ahi:-28 por_avisar:-25 por_el:-33 por_mi:31
por_perdida:-32 por_que:106 por_supuesto:46 por_todo:-47 preocupe:40 price_$:30 pricey:37 problem:60 problem_$:77
problema:54 puede:-87 puede_$:-45 puedo:62 puedo_quejar:53 pues:144 pues_$:57 pues__que:48 pues_no:-74 pues_si:33
pues_ya:44 puntual:35 puro:25 purrs:39 puse:31 put_me:38 que:66 que__a:40 que__con:-46 que__el:36 que__lo:35
que__que:48 que__recogi:-28 que__si:-105 que_hora:-39 que_le:-48 que_me:27 que_no:173 que_pasa:-83 que_sea:27
que_tan:-27 que_trae:40 que_va:-46 queda:-161 queda_$:-71 quedo:41 quedo_$:-54 quedo_como:31 queja:30 quejar:53
quick:31 quien:-36 quien_me:28 quiere:-39 quiere_$:-28 quiero:32 quiet:40 rain:34 rather:-41 ready:114 ready_$:117
really:-61 really_$:-41 rear:32 recogi:-30 reminder:34 reschedule:-67 reschedule_please:-41 right:-151 right_$:-183
ring:-32 ring_me:-33 roll:36 ruido_$:-30 run:48 running:-67 running_late:-31 sabado:30 sabado_a:32 sabado_si:-30
saber:-25 safe:25 said_$:27 sale:-71 sale_$:-25 sale__barato:-26 sale__blanco:-28 sale__que:40 sale_humo:-87
sale_mas:-25 salgo:-26 salio:-37 salir:29 say:147 say__th:-40 say_no:160 say_the:-40 schedule:60 schedule_$:40
school:-37 school__out:-37 school_lets:-37 scratch:-27 se:-94 se__a:-27 se__llevo:-44 se__mas:72 se__olvida:43
se__que:35 se__va:-37 se_preocupe:40 se_puede:-63 se_siente:36 se_va:-59 sea:39 sedan:109 see:367 see__then:97
see__tomorrow:46 see_you:327 seguro:-45 seguro_$:-25 semana__viene:26 send:-29 ser:-25 ser_$:-31 set:69 set__up:75
set_for:31 set_it:62 shakes:-83 shall:34 should:25 si:-67 si_$:-44 si__cuanto:-82 si__dejo:-74 si__favor:49
si__interesa:47 si__jueves:36 si__lo:-38 si__lunes:44 si__perfecto:-45 si__pero:51 si__puede:-42 si__que:48
si__quiere:-40 si__si:-30 si_ahi:31 si_cuanto:43 si_dios:-39 si_el:72 si_es:-37 si_fuera:-32 si_gracias:57 si_hay:-42
si_lo:-104 si_manana:50 si_me:-71 si_no:-117 si_por:55 si_quiero:131 si_se:-63 si_senor:29 si_si:-25 si_voy:115
si_y:79 si_yo:-35 siempre_$:28 siempre_no:-25 siente:36 sign:127 sign__up:148 sign_me:137 sigue__pie:87 sigue_en:87
simon:128 sin:107 sin_falta:78 sip:177 sip_$:177 skip:-31 skip_it:-25 slide:-31 slow:-25 smooth:34 smooth__butter:30
smooth_as:30 so:121 so_$:79 so__is:26 so_far:58 so_i:47 so_no:-48 so_yes:46 sold:-38 sold_$:60 sold_both:-29
sold_the:-27 something__up:-30 something_came:-30 sometime:54 sorry:-65 sorry_$:-55 start:-47 steering:-43
steering__is:-47 steering_wheel:-49 still:43 still__the:-52 still_coming:48 still_good:36 still_on:108 stop:-110
stop_$:-202 stop_by:68 sucio:-25 suena:26 suena_bien:26 supuesto:46 sure:134 sure__me:37 sure_thing:41 swing_by:30
switch:-30 ta:36 take:-76 take__off:-48 take_me:-57 talk:-43 taller:-34 tambien:69 tan:-34 tarde:-25 te:-87
te_digo:-26 temprano_$:25 tengo_ninguna:26 text:-101 text__again:-76 text_me:-101 textos:25 textos_$:28 th:-26
thank_you:62 thanks__the:29 that:37 that_$:67 that__alright:-57 that__be:119 that_car:-29 that_done:71 that_in:-29
that_is:37 that_last:-58 that_truck:-27 that_was:-29 that_would:117 the__again:27 the__at:-25 the__dont:32
the__for:-45 the__go:32 the__going:32 the__i:39 the__now:-47 the__of:-25 the__one:30 the__please:-37 the__thing:32
the__thursday:-29 the__up:-47 the__went:-25 the__what:34 the__wheel:-46 the_appointment:-53 the_bank:32 the_blue:36
the_brakes:30 the_car:-83 the_day:39 the_front:62 the_game:-28 the_heads:-45 the_oil:25 the_one:37 the_other:27
the_phone:-28 the_rear:27 the_reminder:34 the_steering:-49 the_th:-47 the_total:44 the_white:32 the_wrong:-45
them:-61 them_$:-58 then:79 then_$:63 there:72 there_$:126 there__the:38 there_at:-43 there_by:-34 there_in:-77
they:-42 thing_$:-25 think:-57 think__is:50 think__it:-55 think_about:-26 think_it:52 third:-32 this:-31 this_week:26
though:79 though_$:33 through:-43 thumbsup:71 thumbsup_$:71 thurs:54 thurs_$:30 thursday:-26 thursday__is:26
thursday_at:73 thursday_morning:-41 thursday_what:27 till:-28 time_$:-61 to_$:37 to__it:64 to__me:48 to__my:-56
to__on:-28 to__that:61 to__the:38 to__to:-84 to__you:49 to_ask:51 to_be:-37 to_change:-31 to_come:-29 to_drive:-53
to_get:97 to_pay:43 to_set:31 to_stop:29 to_that:89 to_the:64 toca_$:27 today:-46 today_$:-55 todo:155 todo_$:-92
todo__gracias:25 todo__orden:45 todo_bien:96 todo_en:48 told_my:28 tomo:36 tomo_la:36 tomorrow_$:39 tomorrow_at:50
took:-39 top_off:-36 total:54 trabajo:40 trabajo_$:36 traded:-33 traffic:-27 trafico:-30 trafico_$:-32 treated:-28
tren:-30 tren_$:-29 troca:50 truck:61 truck_$:29 truck_is:-34 tues:-114 tuesday_$:-35 twist:81 twist__arm:61
twist_my:81 two:-28 uh:28 un:-137 una:92 uno:-51 uno_$:-33 unos:-50 unsubscribe:-27 up:-61 up_$:90 up_at:-26 use:35
usted:-35 ustedes:-58 ustedes_$:-61 va:-103 va_$:-39 va__ser:-27 va_a:-98 va_el:51 va_en:-96 va_que:25 vale:-72
vale_$:-35 vamos:64 vamos_a:44 vegas:-45 vegas_$:-44 vemos:130 vemos_$:44 vemos_manana:51 vendi:-30 ver:-72
ver_si:-53 verdad:-28 verdad_no:-27 very:30 vibrates:-33 viene:34 viernes_$:-28 voy_$:133 voy__camino:-25
voy__estar:36 voy__hacer:-28 voy__poder:-31 voy_en:-26 voy_pero:34 voy_saliendo:-28 vuelta:-33 wait:73 wait_$:88
waiting:-50 was:-83 was_fixed:-25 wasnt:-33 water_$:31 way_$:55 way_now:-26 we:-99 we__be:37 we__it:-28 we_do:-45
we_sold:-34 wednesday:49 wednesdays:-28 week:-59 weekend:-29 weekend_$:-28 well:35 went:-48 went_to:-27 what_$:-54
what__i:50 what__that:-26 what__the:48 what__your:68 what_a:35 what_did:-25 what_is:80 what_it:35 wheel__off:-47
wheel_is:-52 when:-190 when_school:-27 which:-61 white:71 white_one:29 who:-50 who_is:-36 why:110 why_$:-89
why__i:-44 why__you:-34 why_do:-49 why_is:-34 why_not:351 why_would:-44 will:58 will__be:-62 will__there:93
will_be:86 will_bring:29 will_do:140 will_it:-73 willing:26 win:32 with:26 with_it:30 with_me:30 wobbles:49 wont:-31
wont__it:58 wont__there:-50 wont_be:-61 work:-36 work_$:27 work__it:26 work_on:-26 works:-80 works_$:-74 works__me:71
works_but:-84 works_for:58 worries:49 worse:-98 worse_$:-83 would:-52 would__be:-44 would__need:-39 would_be:61
would_i:-52 would_it:-34 wouldnt:83 wouldnt__it:55 wouldnt_miss:55 wrong:-62 wrong_number:-29 y_$:148 y__digo:-25
y__es:26 y__lo:-28 y__va:-28 y_cuanto:59 y_le:-26 y_me:-26 y_ni:-30 y_si:-61 ya:147 ya_$:75 ya__llego:-53 ya__los:-28
ya__para:-38 ya__voy:-38 ya_casi:-26 ya_esta:-51 ya_estoy:34 ya_mero:-38 ya_no:-32 ya_que:53 ya_quedo:-36 ya_tengo:26
ya_vendi:-36 ya_voy:-66 ye:96 yeah:29 yeah_$:67 yeah__is:31 yeah_no:-75 yeah_ok:26 yep:233 yep__you:29 yep_what:26
yes:603 yes_$:52 yes__at:37 yes__do:36 yes__how:-62 yes__i:43 yes__is:36 yes__it:-87 yes__me:40 yes__works:-66
yes__you:34 yes_and:68 yes_but:-52 yes_do:25 yes_friday:42 yes_i:59 yes_monday:41 yes_please:91 yes_stop:-26
yes_what:28 yesterday:-28 yet:-61 yet_$:-64 yo:-111 yo_no:-26 you:53 you_$:67 you__at:66 you__fix:-46 you__it:147
you__text:-57 you__that:-25 you_bet:32 you_can:-33 you_do:-41 you_even:30 you_got:55 you_like:-92 you_then:107
you_think:49 you_tomorrow:55 you_win:33 you_work:-25 youll:26 your_address:34
"""
