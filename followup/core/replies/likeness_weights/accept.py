"""What speaks for and against `accept`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "accept"
BIAS = -106
WEIGHTS = """\
#abad:25 #abal:28 #abla:-30 #ablo:-32 #ably:24 #abra:31 #abso:32 #acep:43 #acer:76 #acio:-37 #aded:-28 #ador:-28
#afic:-27 #afir:73 #agal:144 #agam:47 #agar:-25 #agen:102 #agre:31 #agua:-29 #ahea:118 #ahor:-48 #aigo:67 #aint:76
#aiti:-41 #ajaj:-23 #akes:-89 #alab:30 #alar:46 #aler:-28 #algo:-50 #alin:-33 #alio:-33 #alir:25 #alla:158 #ally:-30
#almo:-37 #alre:-43 #alri:98 #also:36 #alto:23 #ambi:37 #ambo:29 #amil:-25 #amos:45 #ampo:-23 #anca:44 #ance:-74
#anda:61 #ando:-87 #anej:-33 #ange:90 #angi:-22 #anme:29 #anni:75 #ante:23 #anti:-36 #anto:-27 #anym:-49 #anyt:-42
#apar:38 #apen:-43 #appe:-50 #appi:38 #appy:56 #apun:178 #arat:-24 #arav:25 #aren:-22 #arki:31 #arle:40 #arli:-27
#arlo:93 #arly:35 #arma:39 #aron:-171 #arri:35 #arro:-25 #asad:-38 #asel:-28 #asis:-35 #aski:-25 #asta:32 #aste:-23
#atch:-60 #ated:-36 #ates:-34 #athe:-39 #atio:-23 #ativ:38 #atte:-49 #augh:32 #aunq:28 #avil:25 #avin:-29 #avis:-27
#away:-41 #awes:34 #aybe:-37 #ayer:-25 #ayud:-22 #azul:126 #back:-46 #bado:23 #bank:23 #bara:-24 #bble:39 #bear:29
#bell:51 #bett:59 #biad:33 #biem:-36 #bien:-77 #bios:27 #blan:41 #blem:139 #blue:66 #boat:-29 #body:-43 #book:77
#bout:29 #brar:-32 #brat:-27 #bres:47 #brid:-27 #brig:26 #brin:74 #brok:-36 #bscr:-24 #bsol:32 #bsup:64 #buen:46
#butt:29 #bvio:91 #caba:25 #caig:58 #camb:-25 #came:-66 #canc:-57 #cant:29 #card:-25 #caro:-111 #cars:-45 #caso:-24
#cate:24 #cele:68 #cell:29 #cent:-25 #cept:35 #cerl:55 #cert:28 #chan:39 #chas:-26 #chec:-50 #ches:-24 #chev:102
#chid:51 #choo:-35 #cita:-87 #cito:24 #ckin:-24 #clar:175 #coff:23 #cole:37 #come:-90 #como:45 #comp:38 #conf:44
#conm:44 #conv:36 #corr:22 #coul:-25 #coun:83 #cour:79 #crat:-52 #crib:-61 #cual:-44 #cuen:62 #cues:61 #culp:-29
#cupa:-30 #cupe:33 #dale:180 #dame:81 #damo:29 #darl:50 #date:61 #days:-99 #deal:-76 #dece:-24 #defi:65 #dejo:-73
#dele:229 #deme:61 #demo:-70 #depe:-39 #desd:-129 #dias:-74 #dida:-27 #didn:-67 #diga:83 #digo:-66 #dije:-28 #dijo:32
#dine:-22 #ding:-36 #dios:25 #disc:-56 #dnes:26 #domi:-25 #done:61 #dont:103 #doub:148 #down:52 #draw:-22 #dude:30
#dura:-28 #each:-28 #eads:-41 #eady:59 #eage:-54 #eale:-27 #eali:-22 #eall:-42 #eals:-40 #ease:-50 #eate:-40 #echo:26
#ecib:-23 #ecio:27 #ecto:72 #edad:22 #edan:115 #edes:-54 #edne:22 #eeke:-29 #eeri:-36 #efin:65 #egan:-22 #egar:24
#egas:-40 #egat:-34 #egre:-34 #egui:25 #egun:-35 #egur:-36 #eith:-134 #ejar:25 #ejem:-25 #ejor:-50 #ejos:-33
#eken:-25 #elen:66 #elle:22 #ello:39 #ells:26 #else:-59 #elta:-37 #emas:-23 #embl:-23 #emel:-32 #emor:-35 #emos:67
#empe:-24 #empr:24 #enar:-24 #enas:-46 #enci:43 #enda:43 #ende:83 #endo:-42 #ends:-26 #enin:25 #enme:-47 #enor:31
#ensa:-39 #enso:25 #ente:98 #ento:22 #entr:36 #ents:-23 #eocu:33 #epen:-49 #eque:28 #equi:-22 #erco:41 #erda:-57
#erde:-29 #erdi:-53 #eren:-31 #eres:82 #erfe:25 #erlo:37 #ermi:23 #eron:-94 #erro:37 #erta:57 #erte:22 #eryt:58
#esar:-30 #esch:-58 #escr:-35 #esda:24 #esde:-129 #esen:35 #esim:-22 #esom:34 #espa:-44 #espe:-47 #essi:33 #esta:30
#etan:27 #etim:58 #ette:54 #evar:72 #even:49 #ever:30 #eway:-32 #exac:24 #exce:37 #expl:-53 #fall:43 #falt:62
#fami:-25 #feel:-34 #ffee:23 #ffir:33 #fico:-27 #fier:23 #fill:-22 #find:-42 #fine:-73 #fini:55 #firm:187 #flui:-24
#fore:-47 #forg:-98 #free:-41 #fren:-25 #frid:29 #from:-44 #fron:55 #full:-26 #gale:118 #game:33 #gand:-24 #gara:-22
#gati:-35 #gend:141 #gets:38 #ghbo:22 #ghte:32 #ghty:140 #ging:-34 #gist:28 #give:-38 #glad:22 #gold:24 #good:-23
#gote:-22 #grab:27 #gran:23 #grat:-30 #gree:25 #gres:-31 #grin:25 #gual:-41 #gues:98 #guie:-34 #guna:30 #guno:-86
#gunt:-38 #guro:-36 #habl:-51 #hace:42 #haga:184 #hago:-51 #hake:-71 #half:-29 #hall:27 #hanc:-27 #hang:51 #happ:60
#hasn:28 #hast:41 #have:-68 #hbor:22 #head:63 #hech:27 #hell:22 #here:45 #heve:102 #hich:-34 #hici:-24 #hido:51
#high:25 #hija:32 #hine:27 #hing:60 #hink:-52 #hird:-26 #hite:61 #hold:-23 #hone:-39 #hool:-35 #hora:-81 #hori:-25
#hors:23 #houg:89 #hour:-64 #hrou:-36 #humb:25 #humo:-77 #hurs:27 #hurt:24 #iado:22 #iben:-28 #ible:-24 #ibra:-29
#icey:33 #icie:-34 #idea:157 #ider:31 #idnt:-67 #iemb:-29 #ieme:-35 #iend:-67 #iens:23 #ient:-32 #ierc:45 #iere:-50
#iero:-60 #ierr:39 #ighb:22 #igua:-41 #iler:-24 #ille:-25 #imag:-34 #imon:128 #impo:-22 #inde:32 #iner:-30 #info:-27
#ingu:-64 #init:65 #inos:-28 #inst:-65 #inte:50 #ints:67 #inut:-39 #iodi:23 #ions:-28 #iper:31 #irma:127 #irme:40
#isco:-24 #iscu:-34 #isnt:-27 #issu:53 #ista:33 #iste:37 #isti:-29 #itch:-33 #itel:60 #ithe:-134 #itin:-35 #itte:23
#ittl:-27 #ives:68 #jala:53 #jale:132 #jalo:74 #jand:-37 #jarl:24 #jaro:-31 #jefe:48 #kend:-25 #kids:-26 #know:-32
#labr:30 #lada:24 #lain:74 #laje:-24 #lama:-28 #lanc:61 #lann:86 #lant:-35 #larm:49 #laro:172 #last:-97 #late:-31
#ldnt:118 #leas:-61 #leav:-27 #left:-61 #lejo:-28 #lend:31 #lent:35 #lept:-23 #lets:-83 #leva:80 #levo:-62 #lica:-25
#lico:-24 #lide:-28 #lied:-23 #lien:-26 #lier:-27 #ligh:-30 #like:32 #line:-48 #list:35 #litt:-27 #llaj:-24 #llam:-23
#llas:-23 #lled:22 #llen:-24 #ller:-24 #lmos:-35 #loca:28 #lost:-42 #love:41 #lrea:-43 #lrig:98 #lueg:-138 #luid:-24
#lute:32 #made:-29 #mage:-36 #malo:-44 #mane:-38 #mant:24 #marc:-34 #mart:-44 #mati:71 #mayb:-37 #mber:-24 #mbla:-23
#mbos:29 #mbsu:64 #mejo:-49 #mela:-47 #mens:-29 #mero:-37 #meti:44 #mier:37 #migh:85 #migo:37 #mill:-54 #mind:45
#mino:-27 #mins:-25 #minu:-39 #miss:100 #modo:63 #mone:-49 #mont:-31 #moot:59 #more:-58 #moro:-33 #most:-37 #moto:-22
#move:-27 #mpla:132 #mple:-23 #mpre:-30 #much:-65 #myse:-26 #ncel:-57 #nces:25 #ndam:103 #ndem:80 #need:-52 #neig:22
#neit:-159 #neja:-25 #nero:-32 #nesd:22 #neve:-22 #news:24 #next:24 #nfir:36 #nfri:32 #nged:45 #nger:-24 #nges:27
#ngin:-34 #ngun:-64 #nice:-59 #nigh:-43 #nimo:41 #nine:34 #nite:65 #nmig:44 #nobo:-24 #nois:-27 #none:-38 #note:23
#nque:22 #nsaj:-23 #nsid:31 #nste:-57 #nsub:-22 #ntem:71 #nten:64 #ntes:45 #ntit:-31 #nton:25 #ntre:-36 #ntro:52
#ntua:47 #nuev:34 #numb:-46 #nven:29 #nymo:-49 #nyth:-37 #obbl:32 #oble:121 #obod:-24 #obra:-35 #obre:55 #obvi:91
#oday:-48 #odem:-28 #oder:-45 #odre:-29 #oise:-27 #olut:32 #omas:31 #omet:36 #ompl:101 #ompr:-38 #once:35 #onda:23
#oner:-22 #oney:-45 #onfi:36 #onga:-25 #onge:-24 #onmi:44 #onsi:24 #onte:26 #onth:-31 #onve:29 #ooki:-38 #ooth:59
#oral:52 #orde:37 #orev:-46 #orge:-38 #orgo:-56 #orks:-75 #orra:-22 #orre:46 #orry:-43 #orse:-63 #oser:-24 #ospo:-29
#othi:43 #otra:47 #ough:72 #oull:23 #ound:-29 #oung:25 #ount:75 #ours:55 #ouve:22 #oved:37 #paci:-37 #pala:30
#pana:23 #para:-34 #parc:28 #pasa:-84 #pase:-50 #pass:-64 #past:-26 #pena:-69 #pend:-43 #peni:26 #pens:-25 #perd:-87
#pere:-28 #perf:25 #pero:35 #pesi:-22 #phon:-45 #pien:23 #pier:40 #plai:74 #plan:123 #plea:-55 #plic:-33 #poco:-28
#pode:-74 #podr:-36 #pone:-27 #pong:-37 #port:-27 #pose:24 #posp:-29 #pped:-32 #ppen:-34 #ppie:38 #ppos:25 #preg:-38
#preo:32 #pret:-26 #pric:40 #prob:145 #pued:-37 #pues:176 #punt:224 #purr:35 #puse:29 #qued:-70 #quej:86 #quem:-24
#quic:23 #rade:-50 #rado:-22 #raff:-26 #rafi:-27 #rage:-24 #rail:-23 #rale:52 #rand:27 #rapi:25 #raro:-44 #rasa:-40
#rase:-33 #ratc:-52 #rate:-34 #rath:-37 #rati:-25 #rato:-29 #ravi:25 #rcol:38 #rdad:-27 #rden:30 #rdid:-37 #rdon:-37
#read:50 #reag:-55 #real:-56 #rear:31 #reat:-33 #rect:75 #rega:-38 #regr:-34 #regu:-47 #remo:-29 #rent:-44 #reoc:32
#resa:80 #resc:-59 #rett:-24 #reve:-32 #rfec:25 #rget:-38 #rgot:-56 #ribe:-35 #rice:37 #ride:30 #ries:48 #righ:25
#rind:25 #ring:36 #rise:25 #rkin:28 #rlie:-27 #rmad:32 #rmat:75 #rmis:23 #road:-33 #robl:128 #roca:33 #roke:-40
#roll:36 #rong:-56 #ront:44 #roug:-23 #rrec:82 #rrie:29 #rros:-22 #rses:29 #rted:23 #rtes:-42 #ruck:49 #rued:-22
#runk:22 #runn:-54 #ryth:58 #saba:23 #sado:-41 #safe:23 #sale:-77 #sali:-33 #saro:-22 #sati:25 #scho:-35 #scra:-71
#scri:-61 #scul:-30 #seda:124 #sela:-30 #self:-33 #send:-26 #seno:44 #sent:24 #shak:-72 #shal:28 #shin:30 #sibl:-22
#side:45 #sign:117 #sigo:-24 #simo:102 #sipi:72 #sist:-44 #skin:-26 #skip:-29 #slep:-23 #slid:-28 #slow:-27 #smoo:59
#sold:-22 #solu:32 #some:42 #sorr:-49 #spac:-36 #sper:-47 #spon:-41 #ssed:-26 #ssue:53 #stam:-38 #stan:-33 #star:53
#stas:26 #stat:-24 #stea:-63 #stee:-36 #stil:42 #stir:-41 #stop:-89 #stor:33 #stra:-26 #stre:24 #stuf:-23 #subs:-24
#suen:27 #sues:61 #supu:39 #sure:116 #swap:-22 #swit:-27 #tain:24 #take:-63 #talk:-33 #tamb:63 #tamo:-40 #tant:-30
#tare:118 #tari:30 #tart:-51 #tcha:40 #tche:-29 #tead:-58 #tede:-53 #teer:-41 #tely:96 #teme:112 #tend:-33 #tent:34
#tere:107 #text:-93 #that:25 #them:-52 #then:92 #ther:-130 #they:-43 #thir:-30 #thou:83 #thre:-25 #thro:-32 #thum:25
#thur:27 #tiem:-23 #tien:-25 #till:26 #time:42 #ting:-54 #tire:-22 #tivo:30 #toda:-59 #todo:139 #tomo:38 #tonc:28
#took:-37 #tory:35 #trad:-45 #trae:32 #traf:-53 #trai:-22 #tras:-33 #trat:-33 #treg:-26 #tren:-34 #troc:40 #truc:46
#tter:52 #tual:37 #tues:-85 #tuff:-23 #turn:-34 #twis:99 #uand:28 #uant:-41 #uart:-30 #ubsc:-24 #ucho:-40 #ucks:-25
#ueda:-105 #uede:-112 #uedo:89 #uego:-131 #ueja:80 #uelt:-38 #uena:44 #ueno:25 #uent:58 #uert:34 #uess:98 #uest:73
#uevo:47 #uick:23 #uien:-66 #uiet:35 #uldn:118 #ulpe:-28 #umbe:-49 #umbs:34 #unni:-54 #unos:-44 #unqu:26 #unsu:-22
#unta:-22 #unte:63 #unto:96 #untu:43 #upad:-43 #uper:25 #upue:39 #urrs:35 #urse:82 #usta:76 #uste:-71 #usto:-73
#utel:32 #utte:31 #vale:-65 #vamo:123 #varl:63 #vega:-40 #vemo:109 #venc:38 #vend:-32 #verd:-27 #vere:90 #vers:-22
#very:28 #vibr:-34 #vide:-35 #viej:23 #vier:-25 #vill:24 #ving:-59 #vuel:-42 #walk:25 #wasn:-30 #wedn:22 #week:-96
#well:63 #went:-42 #weso:34 #when:-154 #whic:-34 #whit:61 #wild:30 #will:71 #wist:99 #witc:-27 #wobb:32 #wont:-22
#work:-121 #worr:37 #wors:-94 #woul:27 #wron:-56 #xact:24 #xcel:43 #xpla:-43 #ymor:-49 #youl:23 #youv:22 #ysel:-26
%again_later:-123 %again_later%agree:44 %again_later%car:46 %again_later%car_part:38 %again_later%doubt:34
%again_later%gone_car:61 %again_later%lift:-36 %again_later%machine:22 %again_later%message:-81 %again_later%money:49
%again_later%odometer:29 %again_later%opening:-28 %again_later%place:33 %again_later%question:31
%again_later%season:28 %again_later%staff:35 %again_later%start_again:-39 %again_later%thanks:34
%again_later%wrong_one:47 %agree:454 %agree%bad:-59 %agree%bring:298 %agree%busy:59 %agree%call_off:-121
%agree%car:77 %agree%car_part:28 %agree%doubt:128 %agree%elsewhere:119 %agree%fails:54 %agree%family:84
%agree%gone_car:132 %agree%how_long:202 %agree%leave_me:54 %agree%lift:83 %agree%machine:27 %agree%message:-60
%agree%noise:87 %agree%odometer:52 %agree%on_way:149 %agree%opening:44 %agree%phone:85 %agree%place:26
%agree%question:90 %agree%season:56 %agree%shift_it:46 %agree%smoke_smell:-39 %agree%staff:187 %agree%start_again:47
%agree%thanks:-54 %agree%wrong_one:88 %away:-115 %away%bring:72 %away%call_off:46 %away%car_part:35 %away%doubt:-61
%away%leave_me:55 %away%noise:37 %away%on_way:122 %away%refuse:33 %away%smoke_smell:22 %away%start_again:25
%away%thanks:35 %away%wrong_one:40 %bad:-98 %bad%call_off:59 %bad%car_part:-67 %bad%doubt:-22 %bad%meaning:123
%bad%money:-46 %bad%on_way:-38 %bad%question:-34 %bad%refuse:223 %bad%staff:-30 %bad%start_again:-22 %bring:-31
%bring%busy:51 %bring%call_off:27 %bring%car:47 %bring%car_part:61 %bring%elsewhere:23 %bring%family:52
%bring%gone_car:34 %bring%how_long:-34 %bring%leave_me:-33 %bring%meaning:26 %bring%odometer:-24 %bring%on_way:-34
%bring%phone:31 %bring%refuse:40 %bring%thanks:90 %bring%wrong_one:46 %busy:22 %busy%car:22 %busy%on_way:-22
%busy%refuse:-38 %busy%staff:28 %busy%start_again:28 %busy%thanks:25 %call_off:-116 %call_off%car:-28
%call_off%do_it:81 %call_off%elsewhere:31 %call_off%fails:-94 %call_off%family:-33 %call_off%how_long:63
%call_off%leave_me:75 %call_off%lift:93 %call_off%money:-49 %call_off%on_way:87 %call_off%opening:-26
%call_off%pay_day:-27 %call_off%phone:-30 %call_off%question:119 %call_off%refuse:166 %call_off%shake:-41
%call_off%shift_it:125 %call_off%wrong_one:44 %car:57 %car%car_part:36 %car%do_it:-22 %car%elsewhere:59 %car%fails:30
%car%gone_car:-78 %car%how_long:-31 %car%lift:32 %car%money:24 %car%noise:34 %car%on_way:31 %car%question:26
%car%shift_it:34 %car%start_again:31 %car_part:-111 %car_part%do_it:49 %car_part%money:-26 %car_part%noise:25
%car_part%odometer:45 %car_part%on_way:40 %car_part%place:38 %car_part%question:90 %car_part%season:28
%car_part%shake:39 %car_part%shift_it:38 %car_part%wrong_one:25 %do_it:-119 %do_it%elsewhere:-25 %do_it%fails:-34
%do_it%family:-24 %do_it%gone_car:46 %do_it%how_long:-65 %do_it%leave_me:51 %do_it%message:53 %do_it%money:-61
%do_it%on_way:-29 %do_it%place:33 %do_it%question:-91 %do_it%refuse:81 %do_it%shift_it:47 %do_it%wrong_one:-71
%doubt%gone_car:-48 %doubt%how_long:69 %doubt%leave_me:24 %doubt%lift:34 %doubt%message:-45 %doubt%odometer:-30
%doubt%pay_day:-31 %doubt%place:41 %doubt%question:-48 %doubt%refuse:-147 %doubt%staff:25 %doubt%wrong_one:-42
%elsewhere:-36 %elsewhere%fails:28 %elsewhere%place:32 %elsewhere%question:56 %elsewhere%refuse:39
%elsewhere%shift_it:25 %elsewhere%wrong_one:23 %fails%gone_car:36 %fails%how_long:-27 %fails%place:30
%fails%refuse:-50 %fails%start_again:-34 %fails%thanks:26 %fails%wrong_one:23 %family:-38 %family%how_long:22
%family%odometer:49 %family%question:41 %family%refuse:-26 %family%shift_it:43 %family%wrong_one:-32 %gone_car:-117
%gone_car%money:65 %gone_car%question:82 %gone_car%refuse:50 %gone_car%season:-23 %gone_car%staff:-38
%gone_car%start_again:28 %gone_car%wrong_one:61 %how_long:-89 %how_long%leave_me:33 %how_long%money:37
%how_long%on_way:-52 %how_long%opening:37 %how_long%place:-53 %how_long%question:124 %how_long%refuse:-48
%how_long%shift_it:-53 %how_long%thanks:-28 %leak:-43 %leak%on_way:22 %leave_me:-84 %leave_me%money:36
%leave_me%on_way:57 %leave_me%refuse:55 %lift:31 %lift%opening:-24 %lift%question:-30 %machine:-68
%machine%refuse:-28 %meaning%phone:-28 %meaning%question:-38 %meaning%refuse:119 %message:-31 %message%phone:23
%message%start_again:-114 %message%thanks:44 %message%wrong_one:-30 %money:-51 %money%on_way:66 %money%place:-27
%money%refuse:-34 %money%shift_it:56 %money%smoke_smell:-74 %money%start_again:33 %noise:27 %noise%refuse:31
%odometer:-27 %odometer%question:38 %odometer%refuse:-35 %on_way:-78 %on_way%place:-27 %on_way%question:79
%on_way%refuse:69 %on_way%shift_it:28 %on_way%staff:22 %on_way%thanks:76 %on_way%wrong_one:47 %opening:-44
%opening%question:60 %opening%shift_it:-23 %pay_day:-95 %pay_day%refuse:-34 %pay_day%season:-35 %phone:-165
%phone%refuse:-56 %phone%staff:24 %place:-72 %place%question:41 %place%refuse:-23 %place%shift_it:60 %place%staff:29
%place%start_again:44 %question:-137 %question%refuse:147 %question%start_again:77 %question%thanks:23
%question%who:-74 %question%wrong_one:44 %refuse:-111 %refuse%shake:-40 %refuse%shift_it:71 %refuse%staff:-39
%refuse%start_again:39 %refuse%wrong_one:69 %season:-99 %shake:-109 %shift_it:-166 %shift_it%start_again:-31
%shift_it%thanks:24 %smoke_smell:-102 %staff:-39 %staff%thanks:25 %staff%wrong_one:-81 %thanks:-55 %who:-120
%wrong_one:-114 @?:-50 @after_visit:236 @after_visit_cant_complain:52 @after_visit_not_really:-33 @car:379
@confirm:156 @confirm_:64 @confirm_still_good:37 @confirm_stop:-651 @confirm_stop_si:-39 @confirm_thumbsup:35
@day:-98 @later:-81 @nothing:-415 @odometer:-146 @offers:-663 @reading:-62 @time:-104 @times:-57 @walk_in:179
@walk_in_will_do:33 ^_$:116 ^_a:-129 ^_absolutely:32 ^_aceptan:-30 ^_afirmativo:53 ^_ahi:245 ^_al:28 ^_all:88
^_alright:39 ^_alta:-27 ^_ando:-49 ^_any:-53 ^_appreciate:-59 ^_apunteme:67 ^_are:-65 ^_as:-31 ^_asap:-30 ^_at:-23
^_ay:-29 ^_be:-133 ^_better:38 ^_blue:42 ^_both:31 ^_buen:-26 ^_bueno:34 ^_call:-32 ^_can:-36 ^_cancel:-32 ^_cant:70
^_changed:-23 ^_chevere:84 ^_claro:174 ^_como:127 ^_confirmado:31 ^_confirmo:57 ^_correct:25 ^_correcto:34
^_could:-72 ^_count:76 ^_cual:-58 ^_cuando:-39 ^_cuanto:-155 ^_dale:156 ^_de:174 ^_definitely:59 ^_deme:-28
^_depende:-23 ^_desde:-31 ^_does:-23 ^_dont:30 ^_el:-100 ^_en:-109 ^_es:-58 ^_esta:85 ^_estoy:-56 ^_eta:-55
^_everything:77 ^_excelente:23 ^_fine:107 ^_free:26 ^_fri:-31 ^_friday:-46 ^_go:127 ^_got:-26 ^_gracias:-23
^_hagale:122 ^_half:-46 ^_have:-28 ^_hay:-69 ^_heck:40 ^_hit:-22 ^_hm:-29 ^_hmm:-49 ^_how:-131 ^_hoy:-53 ^_id:138
^_if:60 ^_ill:-25 ^_im:23 ^_is:-167 ^_just:-24 ^_kids:-32 ^_la:44 ^_late:-22 ^_let:-59 ^_lets:-36 ^_listo:35
^_luego:-64 ^_mal:-35 ^_manana:-96 ^_mas:-46 ^_me:78 ^_meh:-49 ^_mi:-27 ^_might:83 ^_min:-38 ^_monday:-38 ^_muy:45
^_nah:-24 ^_need:-41 ^_negative:-22 ^_neither:-156 ^_nel:-25 ^_next:-31 ^_ninguno:-78 ^_nobody:-22 ^_none:-27
^_nop:-50 ^_nos:32 ^_not:-161 ^_ok:275 ^_olvide:-31 ^_on:-62 ^_once:-22 ^_one:-32 ^_orale:52 ^_para:-68 ^_paso:-32
^_perdon:-23 ^_perfecto:67 ^_pesimo:-28 ^_please:119 ^_por:82 ^_puedo:-36 ^_que:-189 ^_quedo:95 ^_quiero:-45
^_rain:30 ^_reschedule:-44 ^_running:-31 ^_runs:22 ^_sale:209 ^_saturday:-35 ^_se:-97 ^_sedan:32 ^_see:154
^_seguro:24 ^_should:-28 ^_si:638 ^_sign:70 ^_sigue:65 ^_simon:111 ^_sin:70 ^_sip:169 ^_smooth:28 ^_sold:34
^_something:-47 ^_sounds:68 ^_still:144 ^_stop:-106 ^_sure:254 ^_tengo:-31 ^_thank:-174 ^_that:156 ^_there:-34
^_thumbsup:64 ^_thurs:-41 ^_thursday:-106 ^_tiene:-26 ^_tienen:-50 ^_todo:175 ^_tomorrow:-29 ^_trae:-24 ^_truck:32
^_tuesday:-35 ^_va:138 ^_voy:-48 ^_what:-216 ^_when:-41 ^_whenever:-25 ^_where:-33 ^_which:-54 ^_white:34 ^_who:-39
^_why:51 ^_will:30 ^_wont:-44 ^_works:134 ^_would:-46 ^_wouldnt:73 ^_y:54 ^_ya:31 ^_ye:82 ^_yep:195 ^_yes:239
^_yo:-35 ^_you:-26 a:-22 a_$:29 a__day:-25 a__en:31 a__hora:-46 a__late:-29 a__of:-37 a__one:-43 a__out:27
a__sale:-50 a__si:-71 a_como:-58 a_hacer:-24 a_little:-31 a_nice:-39 a_plan:32 a_poder:-43 a_ver:-32 abajo:-23
about_it:-27 absolutely:32 absolutely_$:23 add:41 adelante:33 adelante_$:29 afirmativo:53 after:-25 afuera_$:27
agarro:-31 agarro_el:-29 agendeme:110 agendeme_$:107 agua:-26 ahead:118 ahi:316 ahi_$:-130 ahi__caigo:53
ahi__vemos:54 ahi_estare:95 ahi_estoy:72 ahi_le:22 ahi_les:39 ahi_me:28 ahi_nos:54 ahi_voy:79 ahora:-23 ahorita:-25
al:36 al_cien:42 alarma:34 alarms:24 algo:-28 all__for:62 all__what:23 all_good:99 all_set:-35 alla:117 alla_$:42
almost:-35 already:-43 already_$:-23 alright:-42 also:36 alta:-45 am:32 am_i:35 ambos:29 an:41 an_appointment:81
an_hour:-24 and:65 and__you:64 and_early:30 and_no:23 and_out:22 and_thank:57 anda:24 ando:-43 ando_bien:-49
ando_por:-22 another:-44 another_bill:-24 antes:47 any:-22 any__next:33 any_day:35 anymore:-49 anymore_$:-51
anything:-37 apenas:-43 appointment_$:57 appreciate_it:-38 appreciate_you:-26 apunteme:93 are:-32 are_you:-32 arm:99
arm_$:61 as:87 as_butter:24 as_well:47 asi:-81 asi_$:-43 asi__bien:-48 asi_es:44 ask:22 ask_me:44 asking:-25 at:-41
at_$:-48 at__you:24 at_all:48 at_if:30 at_it:23 at_the:-58 at_work:-27 atras:41 aunque:26 avisar_$:-24 away:-41
away_$:-37 awesome:34 ay:-26 ayer:-24 azul:116 azul_$:31 back:-42 bad:122 bad_$:40 bank:25 barato:-24 be:-70
be__at:-40 be__by:-60 be__in:-62 be_a:-25 be_by:-28 be_coming:-23 be_happier:31 be_late:-33 be_ready:-27 be_there:119
beat__to:-23 been__to:54 before_$:-44 before_i:-22 before_the:23 bells:42 bells_on:32 bet:34 better:59 better_than:32
bien:-133 bien_$:-61 bien_asi:-23 bien_el:-26 bien_gracias:30 bien_lo:22 blanca:62 blanca__la:31 bless:-30 blue:66
blue_one:24 boat:-22 book:125 book_it:33 book_me:87 both:23 both__them:40 both_of:40 bout:29 bright:30
bright__early:30 bright_and:30 bring:73 bring__in:35 bring_it:68 btw:80 buen:-24 buena:24 bueno:39 but__much:-81
but__need:28 but_dont:23 but_how:-66 but_i:26 but_it:-56 but_the:-76 but_yes:38 butter:31 butter_$:22 by:45 c:103
caigo:55 caigo_$:51 calendar:27 call_me:-29 cambia:-23 cambiado:33 cambieme:-27 cambieme_la:-24 cambios:27 came:-57
came_up:-31 camino:-27 can:-105 can__come:-27 can__do:-60 can__make:96 can__me:-45 can_text:-50 can_we:-44 cancel:-97
cancel_it:-114 cancel_my:40 cancel_the:-37 cancelen:46 cancelled:22 cant__in:-41 cant__it:-98 cant_come:-62
cant_complain:53 cant_do:-65 cant_make:-60 cant_say:89 cant_wait:90 car:-91 car_is:-51 card:-25 caro:-98 caro_$:-37
carro:22 carros:-24 cars:-45 cars_$:-22 casi_llego:-23 center:-40 chance:-25 change:25 change_$:27 change_it:-22
change_my:-23 changed:38 changed_$:54 changed__mind:-25 changed__my:28 changed_my:-27 changed_on:27 changes:28
check:-26 check_$:-26 chevere:83 chido:51 cien:42 cien_$:36 cita:-70 cita_$:-75 claro:177 claro__si:-23 claro_el:37
cobraron:-23 coffee:24 come:-87 come_friday:-31 come_in:-47 coming_$:-47 coming__the:22 como:52 como__las:-23
como_a:-25 como_la:24 como_no:233 como_nuevo:34 como_sale:-50 como_si:-30 complain:53 complain_$:52 complaints:72
con_el:46 con_los:-26 con_ustedes:-28 confirmado:24 confirmo_$:-27 conmigo:44 conmigo_$:51 contento:25 correct:36
correcto:46 could:-58 couldnt:40 couldnt__happier:31 count:108 count__in:102 count__out:-28 count_me:74 cual:-54
cual__el:-34 cual_es:-24 cualquier__de:25 cuando:28 cuanto_$:-102 cuanto_cuesta:63 cuanto_sale:-51 cuanto_se:29
cuanto_vale:-36 cuente:45 cuente_conmigo:34 cuenten:29 cuesta:61 cuesta_$:39 cuesta__cuanto:24 cuesta_y:24 da:-24
dale:165 dale_el:33 darle:30 date:54 date_$:54 day:29 day_$:-40 day__week:30 days:-26 de__dos:-58 de__por:-23
de__si:-29 de_atras:26 de_la:-38 de_los:-37 de_manana:-32 de_mi:56 de_que:-55 de_una:212 de_verdad:-27 dealer:-22
definitely:65 dejaron:-27 dejo:-73 del:28 del_jueves:-23 deme:-24 depende:-24 desde:-129 desde__lo:-23 desde_que:-72
despues:24 dia:-33 dia_$:-52 dias:-73 dias_$:-28 did:-53 did__last:-51 did_that:-33 did_you:-28 didnt:-67 diga:54
digo:-65 dijo:32 dios:26 dios_me:26 dios_quiere:-37 do:136 do_$:207 do__day:-23 do__do:-42 do__get:-29 do__guys:-24
do__instead:-33 do__know:-24 do__need:-44 do__work:-23 do_friday:-26 do_i:-70 do_it:144 do_monday:-34 do_you:-105
done:68 done_$:43 done_last:-22 dont:103 dont__a:-22 dont__my:55 dont__you:-28 dont_have:24 dont_know:-27 dont_see:55
dont_think:-34 dont_want:-31 door:-30 door_$:-25 dos:-34 down:112 down_$:162 down_on:-29 down_the:-35 drive:-62
drive_to:-57 drives:70 drives_like:62 dude:30 due:22 dura:-24 each:-22 earlier:-27 early:22 early_$:38 either:25
el__a:88 el__antes:29 el__cuanto:43 el__despues:48 el__dia:-24 el__el:30 el__en:48 el__no:-37 el__pero:-39 el__que:25
el__se:-36 el__si:-64 el__va:-30 el_azul:111 el_carro:44 el_de:29 el_foco:22 el_freno:-22 el_lunes:42 el_martes:-33
el_miercoles:26 el_otro:26 el_ruido:23 el_sedan:50 el_seguro:-40 el_trabajo:40 el_volante:-23 else:-36 else_$:-22
en_$:-62 en__dias:-35 en__lista:50 en__manana:-22 en__tarde:25 en__trabajo:26 en_camino:-30 en_el:46 en_la:73
en_orden:36 en_pie:107 en_unos:-38 end:33 end_$:29 entonces:28 entonces_$:25 entrance:22 entro:40 entro_$:44 es:-56
es_$:25 es_la:34 es_malo:-28 esa:-24 ese_servicio:25 espero:-48 espero_$:-49 esta:-45 esta__caro:-51 esta_bien:57
esta_bueno:27 esta_perfecto:-28 estamos:-37 estare:112 estaria:-54 estas:31 este:-32 estoy_$:43 estoy_ahi:-26
estoy_bien:-71 eta:-55 even:32 every:-44 everything:58 everything_$:-24 everything_was:45 excelente:34 explain:-36
falta:30 falta_$:40 far:41 favor_$:-74 fierro:31 fierro_$:31 fin:-27 find:-48 fine:-73 fine_$:-100 fine__me:48
fine_with:35 fine_you:32 firme:37 fix:-39 fix_it:-46 fluid:-22 for__reminder:35 for_friday:-28 for_it:73 for_that:-45
for_thursday:77 for_tomorrow:39 forever:-46 forget:-38 forgot:-56 free__my:28 freno:-25 fri:-61 friday_$:-45
friday_afternoon:49 fridge:28 from:-44 front:56 fuera:-31 fui:-45 full:-25 get:131 get__done:152 get__in:32 get_it:92
get_there:-33 gets:38 give:-35 go:146 go__it:47 go__the:-24 go_ahead:131 go_for:49 go_on:28 gone_$:-23 good:-27
good_$:-108 good__the:23 good_for:40 got_any:-43 got_it:48 got_to:31 grab:26 gracias__todo:-43 gracias_por:-68
grand:27 grand_$:27 gratis:-26 great_$:27 great__bill:-24 great__you:-51 great_another:-24 guess:98 gustaria:84
gusto:-64 guy:-31 guys_have:-25 hablan:-23 hablo:-32 hablo_$:-30 hace:-23 hacerlo:43 hacerlo_$:33 haciendo:-28
had:-73 had_to:-48 hagale:122 hago:-51 hago_$:-47 half:-26 happier:38 happy:58 has:62 hasnt:28 hasta:41 hasta_el:-22
have:-75 have__call:24 have__wrong:-35 have_a:-102 have_the:-37 have_to:39 hay:26 hay__si:-37 hay_problema:73
hay_que:46 he:30 heads:-40 heads_up:-40 hecho:34 hecho_$:39 heck:39 hell:31 hicieron:-24 high:25 hija:32 history:27
hit:-26 hm:-29 hmm:-49 hora:-52 hour:-38 hour_$:22 hours:-25 how:-58 how__is:-102 how__was:-25 how__will:-28
how_do:-37 how_i:-24 hoy:-53 hoy_mismo:-35 huh:22 huh_$:23 humo:-73 humo_$:-52 hurt:24 i:30 i__a:-37 i__an:71
i__come:-30 i__do:-23 i__see:38 i__so:107 i__there:-39 i__thursday:-23 i__you:-42 i_be:-25 i_cant:-49 i_come:-40
i_did:26 i_do:79 i_forgot:-25 i_get:-50 i_go:-34 i_guess:85 i_had:-25 i_have:-34 i_make:113 i_need:-30 i_should:40
i_sold:-22 i_want:30 i_wont:24 i_work:-24 id:154 id__to:75 id_be:43 id_like:50 id_rather:-29 idea:153 idea_$:141
if__like:-76 if_i:38 if_you:44 igual:-31 ill:175 ill__by:27 ill__on:-38 ill__over:39 ill__the:25 ill__there:205
ill_be:137 ill_come:31 ill_pass:-28 ill_stop:38 ill_swing:31 im__coming:-24 im_all:-42 im_coming:38 im_down:205
im_fine:-125 im_good:-161 im_in:90 im_not:-45 im_ready:129 imagen:-34 in:-23 in_$:144 in__out:22 in__you:27 in_and:22
in_law:27 in_the:-26 instead:-57 instead_$:-47 interesa:94 interesa_$:50 interest:-34 interested:50 interested_$:54
ir:-52 ir_$:-61 is:-71 is__a:28 is__address:32 is__cost:22 is__for:24 is__ok:-31 is__yes:25 is_a:83 is_been:-30
is_fine:-56 is_good:76 is_history:31 is_it:-59 is_my:-30 is_off:-41 is_ok:-31 is_right:32 is_that:-50 is_the:55
is_there:22 is_this:-32 is_up:-26 is_your:48 ish:52 ish_$:43 isnt:-27 issues:61 it_$:36 it__a:45 it__and:-36
it__at:-38 it__is:-23 it__me:37 it__needed:38 it__next:-29 it__on:32 it__time:36 it__to:-25 it__under:30 it__up:-22
it__you:31 it_a:28 it_anymore:-28 it_be:-61 it_done:51 it_is:144 it_myself:-22 it_ok:-25 it_on:57 it_shakes:-59
it_to:-59 jaja:60 jaja_si:33 jala:51 jale:132 jale_$:141 jefe:48 jefe_$:27 jueves__la:23 jueves_si:-29 just__i:-27
keep_me:39 kids:-25 know:-39 know_$:-23 know_it:34 know_you:-41 la:34 la__ahi:24 la__esta:-22 la__la:22 la__mi:22
la__no:-55 la__o:28 la__pero:26 la__que:48 la_alarma:33 la_blanca:63 la_cita:-62 la_hago:-22 la_lista:47 la_otra:53
la_puede:-23 la_troca:34 las_$:52 las__llego:-22 las_si:-48 last:-95 last_week:-65 late_$:100 later:-24 law:26 le:-99
le__a:28 le_caigo:24 le_digo:-26 le_sale:-76 left:-61 left_$:-22 lejos:-28 les:-23 les_caigo:30 less:36 let:-59
let_me:-44 lets:-86 lets__it:50 lets__the:-41 lets_do:53 lets_get:69 lets_out:-38 lets_say:-47 lied:-23 lied_to:-22
like__plan:32 like_a:39 like_to:40 lista:46 listo:-38 listo_$:-63 little:-27 little_late:-28 live__the:25
llego_en:-47 lleno:-22 llevarlo:53 llevarlo_$:59 llevo:-62 lo:-43 lo__asi:-32 lo__manana:-22 lo_dejo:-61 lo_hago:-34
lo_que:49 lo_vendi:26 located_$:25 lol:47 long:24 long_$:45 long_will:-26 look:37 look_$:23 los:-83 los_dos:-46
los_frenos:22 los_ninos:-26 lost:-42 lot_$:23 love:45 luego:-138 luego_$:-66 luego_les:-39 lunes_$:-52 lunes_a:37
made:-29 make_it:-92 mal:-111 mal_$:-76 malo:-40 manana__la:27 manejando:-40 manejando_$:-29 maravilla:30 martes:-40
martes__la:27 martes__le:-53 martes_en:29 martes_pero:-57 mas:-68 mas__si:-29 mas_barato:-23 mas_de:-29 maybe:-37
me_$:78 me__a:-26 me__como:-46 me__con:-27 me__cuanto:38 me__de:-43 me__el:-58 me__la:-30 me__the:40 me__un:-27
me__una:-28 me__y:-35 me_again:-67 me_agarro:-35 me_es:-27 me_gustaria:84 me_gusto:-63 me_in:131 me_interesa:105
me_la:-35 me_late:208 me_off:-36 me_olvida:36 me_out:-35 me_parece:40 me_puedo:52 me_queda:-50 me_sale:-46 me_to:31
me_twice:26 me_up:121 me_va:-39 meh:-51 mejor:-49 mero:-27 mi__que:22 mi_carro:-22 mi_cita:-30 mi_hija:32
miercoles:38 miercoles_o:29 miercoles_que:32 might:85 might__well:107 might_as:107 millaje:-24 millas:-28
millas_$:-28 min:-184 min_$:-103 mind:28 mins:-25 mismo_$:23 mismo_dia:-25 mismo_si:-23 miss:100 miss_it:113 modo:68
monday_$:-34 monday__be:-33 monday_instead:-37 money:-44 money_$:-25 month:-28 more_$:22 morning:28 morning_$:-33
morning_to:43 mother__law:29 mother_in:29 moved:25 much__it:-83 much_is:-78 muchas:-23 muchas__por:-38
muchas_gracias:-23 mucho:-39 mucho_$:-26 muy:-56 muy_caro:-38 muy_mal:-23 my__will:38 my_arm:82 my_car:-23 my_end:41
my_mind:-25 my_way:-35 myself:-26 n:-30 nada_mas:22 nah:-24 need:-55 need_$:-27 need_to:-39 negative:-22 neither:-159
neither_$:-82 nel:-25 never:-26 new:67 new_$:42 news:24 next:24 ni:-64 ni_modo:68 nice:-55 nice__you:-22 nice_of:-22
night:-57 night_$:-74 night_and:22 nine:36 nine_$:25 ninguna:22 ninguno:-85 ninguno__los:-38 ninguno_de:-38 ninos:-28
ninos_$:-25 no:-106 no_$:-54 no__a:-89 no__at:48 no__bien:-93 no__conmigo:-39 no__el:-27 no__esperen:-24
no__gusto:-63 no__hago:-33 no__here:64 no__interesa:-81 no__ir:-32 no__is:-58 no__la:-22 no__preocupe:35
no__problema:75 no__puedo:52 no__que:-35 no__that:82 no_complaints:72 no_gracias:-31 no_hay:98 no_im:-28 no_issues:61
no_it:-46 no_jala:24 no_la:23 no_me:-114 no_more:38 no_podre:-29 no_problem:95 no_puedo:-52 no_quedo:-50
no_quiero:-29 no_se:96 no_sigue:-66 no_thanks:-31 no_that:-33 no_to:107 no_voy:-125 no_what:-22 no_worries:52
none:-31 none__them:-26 none_of:-27 noon_$:23 nop:-50 nop_$:-50 nos:106 nos__manana:44 nos_vemos:117 not:-29
not_$:212 not__with:-24 not__yet:-75 not_a:112 not_coming:-65 not_interested:-42 not_really:-38 not_sure:-145
not_to:27 now:-121 now_$:-91 now__me:22 nuevo:38 nuevo_$:27 number:-43 number_$:-35 o:50 of:-39 of_you:-25 off:-111
off_$:-23 off__now:-39 off__schedule:-35 off_the:-42 oh__another:-27 oh_great:-24 oil:40 oil_$:24 oil_change:22
ok:-29 ok_$:-289 ok__drive:-57 ok__el:34 ok__i:25 ok__the:-57 ok_el:50 ok_friday:36 ok_to:-84 olvida:36 olvide:-31
on:51 on_$:111 on__end:41 on__list:22 on__way:-64 on_it:26 on_me:33 onda:32 one:-52 one_$:-43 one_with:26 opening:33
or:47 orale:52 orden:36 otra:43 otra_semana:27 out:-98 out_$:-96 over_$:23 over_here:-41 own:-39 palabra:31 para:-39
para__si:-41 para_el:-38 para_que:-30 para_un:-26 parking:31 parking_$:43 pasa:-81 pasa__no:-33 pasa_si:-79
pasela:-25 pass:-63 pass_$:-28 past_$:-23 pay:41 pedal:-28 pedi__en:29 pedi_permiso:29 pena:-25 perdida:-32
perdon:-35 perfect:-23 perfecto:44 permiso:25 permiso__el:29 permiso_en:29 pero:83 pero__me:32 pero__no:33
pero__que:43 pero_cuanto:-93 pero_el:-29 pero_hasta:23 pero_le:-50 pero_que:28 pero_si:23 pero_ya:30 pesimo:-22
phone:-50 phone_$:-41 pie:102 pie_$:57 pienso:23 pierdo:24 plan:45 plan_$:51 planning:69 planning__it:69
planning_on:69 please:-72 please_$:-211 please__me:-23 please_and:55 please_do:113 please_dont:51 please_take:-37
pm_$:24 podemos:-28 poder:-45 podre:-29 pop:26 por:32 por__no:198 por_ahi:-22 por_el:-32 por_mi:26 por_perdida:-30
por_que:98 por_supuesto:38 por_todo:-38 preocupe:35 price_$:24 pricey:33 problem:62 problem_$:75 problema:52
puede:-75 puede_$:-39 puedo:54 pues:130 pues_$:47 pues_no:-55 pues_si:33 pues_ya:30 puntual:32 puro:22 purrs:35
puse:29 put_me:34 que:63 que_$:-35 que__a:39 que__abren:23 que__con:-42 que__el:32 que__lo:22 que__que:39 que__si:-88
que_hora:-28 que_le:-42 que_no:161 que_pasa:-74 que_sea:23 que_tan:-23 que_trae:35 que_va:-27 queda:-135 queda_$:-59
quedo:35 quedo_$:-46 quedo_como:27 queja:28 quick:28 quien:-32 quien_me:25 quiere:-36 quiere_$:-27 quiero:25 quiet:35
rain:29 rather:-37 ready:102 ready_$:107 really:-42 really_$:-33 rear:29 reminder:35 reschedule:-58
reschedule_please:-39 right:-129 right_$:-158 ring:-29 ring_me:-29 road:-22 roll:29 rueda:-22 ruido_$:-27 run:36
running:-50 running_late:-22 sabado:26 sabado_a:25 sabado_si:-28 saber:-22 safe:23 said_$:22 sale:-73 sale_$:-39
sale__barato:-23 sale__blanco:-26 sale__que:35 sale_humo:-78 salgo:-22 salio:-33 salir:25 say:129 say__th:-38
say_no:142 say_the:-38 schedule:57 schedule_$:41 school:-35 school__out:-31 school_lets:-31 scratch:-25 se:-95
se__a:-25 se__en:22 se__llevo:-41 se__mas:60 se__olvida:36 se__que:28 se__va:-33 se_le:-23 se_preocupe:35
se_puede:-51 se_siente:27 se_va:-56 sea:37 sedan:108 see:329 see__then:92 see__tomorrow:47 see_you:284 seguro:-36
semana__viene:23 send:-25 ser:-23 ser_$:-27 set:52 set__up:56 set_for:28 set_it:51 shakes:-77 shall:28 should:23
should__be:-22 si:-30 si__cuanto:-70 si__dejo:-67 si__favor:44 si__interesa:39 si__jueves:30 si__lo:-35 si__lunes:37
si__perfecto:-43 si__pero:47 si__puede:-37 si__que:43 si__quiere:-37 si__si:-28 si_ahi:24 si_cuanto:42 si_dios:-36
si_el:63 si_es:-34 si_fuera:-27 si_gracias:49 si_hay:-38 si_lo:-97 si_manana:46 si_me:-72 si_no:-94 si_por:49
si_quiero:113 si_se:-56 si_senor:23 si_si:-24 si_voy:103 si_y:70 si_yo:-31 siempre_$:23 siempre_no:-24 siente:27
sign:119 sign__up:135 sign_me:128 sigue__pie:70 sigue_en:70 simon:112 sin:94 sin_falta:67 sip:169 sip_$:169 skip:-28
skip_it:-22 slide:-28 slow:-26 smooth:29 smooth__butter:24 smooth_as:24 so:117 so_$:73 so__is:23 so_i:38 so_no:-35
so_yes:43 sold_$:49 sold_the:-23 something__up:-29 something_came:-29 sometime:58 sorry:-49 sorry_$:-45 start:-39
steering:-36 steering__is:-40 steering_wheel:-42 still:50 still__the:-36 still_coming:39 still_good:30 still_on:98
stop:-86 stop_$:-173 stop_by:61 stuff:-23 suena:27 suena_bien:22 supuesto:38 sure:124 sure__me:25 sure_thing:31
swing_by:26 switch:-27 ta:31 take:-63 take__off:-38 take_me:-45 talk:-34 taller:-31 tambien:63 tan:-31 tarda:22
te:-66 te_digo:-24 tell_you:-23 temprano_$:22 tengo_ninguna:22 text:-91 text__again:-68 text_me:-90 textos:22
textos_$:24 thank:-27 thank_you:45 thanks__the:31 that:24 that_$:53 that__be:106 that_car:-22 that_done:65
that_in:-24 that_is:28 that_last:-51 that_was:-27 that_would:105 the__again:25 the__dont:29 the__for:-34 the__go:28
the__i:30 the__it:22 the__now:-41 the__one:26 the__please:-32 the__thing:40 the__thursday:-25 the__up:-41
the__went:-23 the__what:30 the__wheel:-39 the_appointment:-46 the_bank:29 the_blue:33 the_brakes:26 the_car:-66
the_day:22 the_front:54 the_game:-23 the_heads:-39 the_oil:23 the_one:33 the_phone:-28 the_rear:24 the_reminder:35
the_steering:-42 the_th:-37 the_total:30 the_white:30 the_wrong:-42 them:-52 them_$:-28 then:92 then_$:73 there:69
there_$:124 there__the:33 there_at:-39 there_by:-32 there_in:-66 they:-37 think:-56 think__is:42 think__it:-53
think_about:-24 think_it:42 third:-26 this_time:23 though:76 though_$:34 through:-36 thumbsup:64 thumbsup_$:64
thurs:42 thurs_$:24 thursday__is:27 thursday_at:68 thursday_morning:-31 thursday_what:28 till:-23 time_$:-54 to:31
to_$:36 to__it:59 to__me:31 to__my:-46 to__on:-24 to__that:59 to__the:34 to__to:-65 to__you:52 to_ask:43 to_be:-34
to_call:27 to_change:-27 to_come:-26 to_drive:-47 to_get:96 to_pay:39 to_set:24 to_stop:27 to_that:78 to_the:52
toca_$:27 today:-40 today_$:-50 todo:149 todo_$:-70 todo__gracias:23 todo__orden:41 todo_bien:97 todo_en:45
told_my:25 tomo:30 tomo_la:31 tomorrow_$:44 tomorrow_at:34 took:-37 top_off:-31 total:39 trabajo:40 trabajo_$:36
traded:-27 trae:23 traffic:-26 trafico:-27 trafico_$:-29 treated:-29 tren:-31 tren_$:-30 troca:39 truck:55 tues:-87
tuesday_$:-35 twist:75 twist__arm:58 twist_my:75 two:-27 uh:23 un:-123 un_lado:-22 una:103 uno:-46 uno_$:-28 unos:-44
unsubscribe:-22 up:-56 up_$:77 up_at:-23 use:31 usted:-30 ustedes:-53 ustedes_$:-56 va:-95 va_$:-24 va__ser:-24
va_a:-88 va_el:42 va_en:-87 vale:-65 vale_$:-32 vamos:59 vamos_a:41 vegas:-40 vegas_$:-40 vemos:110 vemos_$:34
vemos_manana:44 ver:-68 ver_si:-46 verdad:-30 verdad_no:-24 very:25 vibrates:-31 viene:24 volante:-23 voy_$:108
voy__camino:-24 voy__estar:33 voy__hacer:-22 voy__poder:-28 voy_en:-25 voy_pero:33 voy_saliendo:-26 vuelta:-28
wait:64 wait_$:79 waiting:-41 was:-91 was_fixed:-23 wasnt:-30 water_$:26 way:-27 way_$:36 way_now:-23 we:-68
we__be:34 we_do:-40 we_sold:-25 wednesday:49 wednesdays:-27 week:-50 week_$:-22 weekend:-25 weekend_$:-23 well:49
went:-42 went_to:-23 what_$:-46 what__i:47 what__the:43 what__your:58 what_a:31 what_are:22 what_did:-23 what_i:-23
what_is:78 wheel__off:-41 wheel_is:-45 when:-164 when_im:-24 when_school:-22 which:-53 white:61 white_one:23 who:-40
who_is:-28 why:99 why_$:-84 why__i:-42 why__you:-29 why_do:-42 why_is:-32 why_not:330 why_would:-41 will:47
will__be:-54 will__there:86 will_be:78 will_bring:23 will_do:126 will_it:-68 willing:23 win:32 with:23 with__i:-26
with__on:22 with_bells:22 with_it:24 with_me:31 wobbles:41 wont:-22 wont__coming:-23 wont__it:52 wont__there:-43
wont_be:-53 work:-41 work_on:-24 works:-75 works_$:-67 works__me:61 works_but:-73 works_for:46 worries:52 worse:-86
worse_$:-71 would:-47 would__be:-35 would__need:-39 would_be:57 would_i:-48 would_it:-30 wouldnt:74 wouldnt__it:49
wouldnt_miss:49 wrong:-56 wrong_number:-28 y_$:133 y__digo:-22 y__es:23 y__lo:-26 y__va:-28 y_cuanto:54 y_le:-23
y_me:-26 y_ni:-28 y_se:-25 y_si:-52 ya:142 ya_$:73 ya__llego:-46 ya__para:-31 ya__voy:-34 ya_casi:-31 ya_esta:-38
ya_mero:-32 ya_no:-34 ya_que:45 ya_quedo:-28 ya_tengo:23 ya_voy:-60 ye:82 yeah_$:68 yeah_no:-69 yeah_ok:23 yep:208
yep__you:27 yes:545 yes_$:66 yes__do:25 yes__how:-50 yes__i:45 yes__is:35 yes__it:-71 yes__me:28 yes__works:-58
yes__you:24 yes_and:56 yes_but:-46 yes_friday:33 yes_i:46 yes_monday:36 yes_please:74 yes_the:23 yes_what:26 yet:-67
yet_$:-67 yo:-101 yo_no:-24 you_$:39 you__a:-26 you__at:65 you__fix:-42 you__it:122 you__text:-50 you_bet:29
you_can:-31 you_do:-38 you_even:26 you_got:41 you_like:-79 you_then:102 you_think:41 you_tomorrow:55 you_win:32
you_work:-23 youll:23 your_address:26 youve:22
"""
