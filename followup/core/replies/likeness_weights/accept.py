"""What speaks for and against `accept`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "accept"
BIAS = -99
WEIGHTS = """\
#abad:28 #abal:28 #abla:-32 #ablo:-32 #ably:26 #abra:31 #abso:38 #acep:47 #acer:80 #acio:-34 #aded:-29 #ador:-27
#afic:-30 #afir:73 #agal:144 #agam:50 #agen:114 #agre:32 #agua:-27 #ahea:124 #ahor:-47 #aigo:70 #aint:79 #aiti:-42
#akes:-89 #alab:30 #alar:49 #aler:-27 #algo:-50 #alin:-32 #alio:-35 #alla:165 #ally:-45 #almo:-35 #alre:-42 #alri:98
#also:35 #ambo:30 #amin:-26 #amos:53 #anca:46 #ance:-117 #anda:61 #ando:-88 #anej:-34 #ange:98 #anme:30 #anni:75
#ante:28 #anti:-35 #anym:-57 #anyt:-40 #apar:39 #apen:-46 #appe:-50 #appi:37 #appy:58 #apun:180 #arav:25 #arde:-25
#arki:32 #arle:41 #arli:-33 #arlo:86 #arly:36 #arma:41 #aron:-176 #arri:36 #arro:-30 #asad:-44 #asel:-28 #asis:-37
#aski:-27 #asta:31 #atch:-62 #ated:-34 #ates:-33 #athe:-38 #atio:-25 #ativ:47 #atte:-49 #augh:32 #aunq:28 #avil:25
#avin:-33 #avis:-27 #away:-40 #awes:33 #aybe:-38 #ayer:-25 #azul:127 #back:-46 #bado:27 #bble:38 #bear:29 #bell:52
#bett:61 #biad:34 #biar:-29 #biem:-35 #bien:-97 #bios:28 #blan:41 #blem:146 #blue:70 #boat:-30 #body:-40 #book:85
#bout:29 #brar:-33 #brat:-26 #bres:48 #brid:-26 #brig:27 #brin:84 #brok:-35 #bscr:-28 #bsol:38 #bsup:77 #buen:48
#butt:29 #bvio:92 #caba:26 #caig:60 #camb:-41 #came:-69 #canc:-99 #cant:37 #card:-26 #caro:-116 #cars:-46 #cela:-25
#cele:59 #cell:29 #cent:-25 #cept:40 #cerl:58 #cert:28 #chan:48 #chas:-26 #chec:-51 #chev:102 #chid:52 #choo:-39
#cita:-105 #clar:177 #cole:39 #come:-91 #como:49 #comp:45 #conf:49 #conm:44 #conv:30 #coul:-29 #coun:88 #cour:81
#crat:-54 #crib:-66 #cual:-41 #cuen:64 #cues:63 #culp:-34 #cupa:-29 #cupe:34 #dale:184 #dame:81 #damo:30 #darl:50
#date:62 #days:-104 #deal:-75 #defi:64 #dejo:-73 #dele:230 #deme:71 #demo:-73 #depe:-39 #desd:-128 #dias:-73
#dida:-27 #didn:-68 #diga:85 #digo:-67 #dije:-28 #dijo:33 #ding:-37 #dios:30 #disc:-61 #dnes:27 #domi:-25 #done:67
#dont:110 #doub:154 #down:56 #dude:31 #dura:-29 #each:-29 #eads:-39 #eady:61 #eage:-51 #eale:-26 #eall:-58 #eals:-40
#ease:-76 #eate:-40 #echo:26 #ecio:26 #ecto:77 #edan:114 #edes:-54 #eeke:-32 #eeri:-37 #efin:64 #egan:-25 #egas:-39
#egat:-30 #egre:-35 #egui:25 #egun:-35 #egur:-34 #eith:-144 #ejar:26 #ejor:-58 #ejos:-32 #eken:-27 #elen:62 #ello:40
#ells:27 #else:-58 #elta:-37 #emel:-31 #emor:-33 #emos:78 #enas:-48 #enci:39 #enda:48 #ende:92 #endo:-44 #ends:-25
#enin:27 #enme:-55 #enor:35 #ensa:-43 #enso:25 #ente:100 #entr:39 #eocu:35 #epen:-48 #eque:30 #erco:42 #erda:-56
#erde:-27 #erdi:-53 #eren:-34 #eres:98 #erfe:29 #erlo:40 #eron:-98 #erro:38 #erta:57 #eryt:56 #esar:-30 #esch:-64
#escr:-37 #esda:30 #esde:-128 #esen:35 #esom:33 #espa:-43 #espe:-42 #essi:34 #esta:56 #etan:27 #etim:59 #etra:-25
#ette:55 #evar:75 #even:51 #ever:30 #eway:-33 #exce:37 #expl:-54 #fall:43 #falt:69 #feel:-33 #ffir:39 #fico:-30
#fier:25 #find:-43 #fine:-75 #fini:54 #firm:198 #flui:-25 #fore:-45 #forg:-97 #free:-47 #fren:-26 #frid:26 #from:-40
#fron:55 #full:-26 #gale:118 #game:34 #gand:-25 #gati:-31 #gend:151 #gets:38 #ghte:33 #ghty:140 #ging:-34 #gist:29
#give:-37 #gold:25 #good:-63 #grab:28 #gran:25 #grat:-30 #gree:27 #gres:-32 #grin:25 #gual:-40 #gues:100 #guie:-34
#guna:30 #guno:-85 #gunt:-38 #guro:-34 #habl:-54 #hace:51 #haga:187 #hago:-52 #hake:-72 #half:-26 #hall:29 #hanc:-27
#hang:62 #happ:62 #hasn:28 #hast:40 #have:-83 #head:72 #hech:28 #here:67 #heve:102 #hich:-34 #hici:-26 #hido:52
#high:26 #hija:31 #hine:28 #hing:73 #hink:-52 #hird:-27 #hite:61 #hone:-41 #hool:-39 #hora:-81 #hori:-25 #houg:89
#hour:-63 #hrou:-36 #humb:38 #humo:-78 #hurs:32 #iben:-27 #ibra:-28 #icey:32 #icie:-36 #idea:155 #ider:31 #idnt:-68
#iemb:-29 #ieme:-34 #iend:-68 #ient:-31 #ierc:47 #iere:-49 #iero:-64 #ierr:39 #igua:-41 #ille:-25 #imag:-33 #imon:131
#inde:33 #iner:-30 #info:-30 #ingu:-63 #init:65 #inos:-27 #inst:-72 #inte:67 #ints:69 #inut:-44 #ions:-30 #iper:31
#irma:134 #irme:42 #iscu:-38 #isnt:-26 #issu:52 #ista:33 #iste:38 #isti:-31 #itch:-35 #itel:60 #ithe:-144 #itin:-36
#ittl:-26 #ives:68 #jala:53 #jale:131 #jalo:74 #jand:-38 #jaro:-32 #jefe:51 #kend:-27 #kids:-26 #know:-32 #labr:31
#lain:80 #lama:-29 #lanc:62 #lann:87 #lant:-34 #larm:52 #laro:174 #last:-98 #late:-49 #ldnt:124 #leas:-87 #leav:-31
#left:-60 #lejo:-28 #lema:25 #lend:32 #lent:35 #lets:-81 #leva:83 #levo:-60 #lica:-26 #lide:-27 #lien:-28 #lier:-33
#ligh:-31 #like:36 #line:-47 #list:36 #litt:-26 #llam:-26 #ller:-25 #lmos:-33 #loca:29 #lost:-41 #love:41 #lrea:-42
#lrig:98 #lueg:-141 #luid:-25 #lute:38 #made:-28 #mage:-35 #make:-31 #malo:-44 #mane:-39 #mant:25 #marc:-37 #mart:-42
#mati:76 #mayb:-38 #mber:-25 #mbos:29 #mbsu:77 #mejo:-57 #mela:-47 #mens:-33 #mero:-38 #meti:46 #mier:39 #migh:86
#migo:38 #mill:-53 #mind:47 #mino:-32 #mins:-26 #minu:-44 #miss:107 #modo:64 #mone:-49 #mont:-33 #moot:58 #more:-68
#moro:-31 #most:-35 #move:-35 #mpla:138 #mpre:-31 #much:-72 #myse:-26 #ncel:-98 #nces:25 #ndam:102 #ndem:88 #need:-66
#neit:-167 #neja:-26 #nero:-32 #nfir:41 #nfri:33 #nged:49 #nger:-26 #nges:28 #ngin:-33 #ngun:-63 #nice:-58 #nigh:-45
#nimo:42 #nine:36 #nite:65 #nmig:44 #nois:-26 #none:-37 #nsaj:-27 #nsid:32 #nste:-64 #nsub:-25 #ntem:73 #nten:66
#ntes:44 #ntit:-31 #nton:26 #ntre:-36 #ntro:52 #ntua:48 #nuev:33 #numb:-47 #nymo:-57 #nyth:-35 #obbl:32 #oble:129
#obra:-37 #obre:56 #obvi:92 #oday:-53 #odem:-32 #oder:-50 #odre:-35 #oise:-26 #olut:38 #omas:33 #omet:38 #ompl:108
#ompr:-38 #once:36 #oney:-45 #onfi:40 #onge:-26 #onmi:44 #onte:26 #onth:-32 #ooki:-40 #ooth:58 #oral:55 #orde:38
#orev:-47 #orge:-38 #orgo:-56 #orks:-80 #orre:46 #orry:-62 #orse:-62 #ospo:-29 #othi:47 #otra:48 #ough:75 #ound:-35
#ount:80 #ours:54 #oved:38 #paci:-37 #pala:30 #para:-33 #parc:28 #pasa:-87 #pase:-48 #pass:-65 #past:-25 #pena:-73
#pend:-42 #peni:27 #perd:-87 #pere:-29 #perf:29 #pero:45 #phon:-48 #pier:42 #plai:80 #plan:126 #plea:-81 #plic:-33
#poco:-28 #pode:-82 #podr:-43 #pone:-27 #pong:-36 #port:-26 #pose:25 #posp:-29 #pped:-33 #ppen:-33 #ppie:37 #ppos:26
#preg:-38 #preo:34 #pret:-25 #pric:38 #prob:152 #pued:-51 #pues:186 #punt:227 #purr:34 #puse:30 #qued:-77 #quej:87
#rade:-51 #raff:-31 #rafi:-30 #rale:55 #rand:29 #raro:-45 #rasa:-46 #rase:-31 #ratc:-54 #rate:-34 #rath:-36 #rati:-25
#rato:-29 #ravi:25 #rcol:40 #rdad:-26 #rden:30 #rdid:-37 #rdon:-38 #read:51 #reag:-52 #real:-73 #rear:31 #reat:-36
#rect:75 #rega:-37 #regr:-35 #regu:-46 #remo:-31 #rent:-47 #reoc:34 #resa:87 #resc:-64 #reve:-34 #rfec:29 #rget:-38
#rgot:-56 #ribe:-38 #rice:36 #ride:31 #ries:52 #righ:27 #rind:25 #ring:44 #rise:25 #rkin:29 #rlie:-33 #rmad:32
#rmat:80 #road:-32 #robl:136 #roca:41 #roke:-39 #roll:37 #rong:-58 #ront:44 #rrec:83 #rrie:35 #rses:30 #rtes:-40
#ruck:54 #runn:-71 #ryth:56 #saba:27 #sado:-47 #sale:-85 #sali:-37 #sati:25 #scho:-39 #scra:-73 #scri:-67 #scul:-34
#seda:123 #sela:-30 #self:-35 #send:-28 #seno:47 #sent:27 #shak:-74 #shal:29 #shin:31 #side:46 #sign:118 #simo:106
#sipi:73 #sist:-47 #skin:-28 #skip:-30 #slid:-27 #slow:-25 #smoo:58 #sold:-35 #solu:38 #some:44 #sorr:-68 #soun:-27
#spac:-36 #sper:-43 #spon:-40 #ssed:-27 #ssue:52 #stam:-36 #stan:-32 #star:60 #stas:27 #stea:-70 #stee:-36 #stil:59
#stir:-44 #stop:-107 #stor:33 #stra:-25 #subs:-28 #suen:28 #sues:61 #supu:43 #sure:121 #swit:-30 #tain:25 #take:-65
#talk:-33 #tamb:64 #tamo:-39 #tant:-28 #tare:126 #tari:31 #tart:-55 #tcha:41 #tche:-31 #tead:-65 #tede:-54 #teer:-41
#tely:103 #teme:115 #tend:-32 #tent:34 #tere:122 #text:-102 #that:27 #them:-66 #then:98 #ther:-124 #they:-42
#thir:-31 #this:-25 #thou:83 #thro:-32 #thum:37 #thur:32 #till:42 #time:43 #ting:-56 #tire:-26 #tivo:32 #toda:-64
#todo:144 #tomo:39 #tonc:28 #took:-36 #tory:35 #trad:-45 #trae:31 #traf:-60 #tras:-37 #trat:-33 #treg:-26 #tren:-33
#troc:41 #truc:51 #tter:53 #tual:39 #tues:-84 #turn:-34 #twis:99 #uand:29 #uant:-38 #uart:-29 #ubsc:-28 #ucho:-41
#ueda:-112 #uede:-121 #uedo:82 #uego:-134 #ueja:80 #uelt:-38 #uena:46 #uent:60 #uert:36 #uess:100 #uest:81 #uevo:47
#uien:-70 #uiet:35 #uldn:124 #ulpe:-33 #umbe:-50 #umbs:47 #unni:-71 #unos:-43 #unqu:26 #unsu:-25 #unte:66 #unto:96
#untu:44 #upad:-42 #upue:43 #urrs:34 #urse:83 #usta:77 #uste:-70 #usto:-73 #utel:38 #utte:30 #vale:-66 #vamo:127
#varl:64 #vega:-40 #vemo:122 #venc:33 #vend:-31 #verd:-25 #vere:90 #very:30 #vibr:-33 #vide:-35 #vier:-29 #ving:-62
#vuel:-42 #wait:25 #walk:27 #wasn:-29 #week:-100 #well:65 #went:-42 #weso:33 #when:-164 #whic:-34 #whit:61 #wild:31
#will:83 #wist:99 #witc:-30 #wobb:32 #wont:-25 #work:-133 #worr:42 #wors:-95 #woul:30 #wron:-58 #xcel:41 #xpla:-43
#ymor:-57 #ysel:-26 %again_later:-128 %again_later%agree:61 %again_later%car:45 %again_later%car_part:39
%again_later%doubt:37 %again_later%gone_car:62 %again_later%lift:-26 %again_later%message:-84 %again_later%money:47
%again_later%odometer:29 %again_later%opening:-29 %again_later%place:29 %again_later%question:35
%again_later%season:27 %again_later%staff:36 %again_later%start_again:-42 %again_later%thanks:35
%again_later%wrong_one:48 %agree:460 %agree%bad:-64 %agree%bring:330 %agree%busy:64 %agree%call_off:-119
%agree%car:69 %agree%doubt:139 %agree%elsewhere:120 %agree%fails:52 %agree%family:86 %agree%gone_car:133
%agree%how_long:213 %agree%leave_me:34 %agree%lift:89 %agree%machine:25 %agree%message:-68 %agree%money:-26
%agree%noise:79 %agree%odometer:53 %agree%on_way:178 %agree%opening:40 %agree%phone:87 %agree%question:88
%agree%refuse:-42 %agree%season:56 %agree%shift_it:66 %agree%smoke_smell:-41 %agree%staff:189 %agree%start_again:51
%agree%thanks:-66 %agree%wrong_one:90 %away:-120 %away%bring:74 %away%call_off:45 %away%car_part:34 %away%doubt:-60
%away%leave_me:55 %away%noise:36 %away%on_way:131 %away%refuse:33 %away%start_again:26 %away%thanks:36
%away%wrong_one:42 %bad:-105 %bad%call_off:68 %bad%car_part:-70 %bad%meaning:120 %bad%money:-47 %bad%on_way:-38
%bad%question:-34 %bad%refuse:224 %bad%staff:-32 %bring:-25 %bring%busy:53 %bring%call_off:29 %bring%car:48
%bring%car_part:60 %bring%family:55 %bring%gone_car:34 %bring%how_long:-38 %bring%leave_me:-47 %bring%meaning:26
%bring%odometer:-28 %bring%on_way:-38 %bring%phone:37 %bring%refuse:35 %bring%thanks:91 %bring%wrong_one:50
%busy%refuse:-39 %busy%staff:28 %busy%start_again:28 %busy%thanks:26 %call_off:-128 %call_off%car:-25
%call_off%do_it:88 %call_off%elsewhere:32 %call_off%fails:-96 %call_off%family:-35 %call_off%how_long:66
%call_off%leave_me:78 %call_off%lift:100 %call_off%money:-47 %call_off%on_way:108 %call_off%opening:-25
%call_off%pay_day:-28 %call_off%phone:-30 %call_off%question:138 %call_off%refuse:181 %call_off%shake:-41
%call_off%shift_it:123 %call_off%wrong_one:45 %car:48 %car%car_part:33 %car%elsewhere:58 %car%fails:28
%car%gone_car:-91 %car%how_long:-34 %car%lift:34 %car%noise:34 %car%on_way:33 %car%shift_it:34 %car%start_again:31
%car_part:-131 %car_part%do_it:46 %car_part%money:-29 %car_part%odometer:45 %car_part%on_way:41 %car_part%place:37
%car_part%question:84 %car_part%season:28 %car_part%shake:39 %car_part%shift_it:36 %do_it:-117 %do_it%elsewhere:-25
%do_it%fails:-35 %do_it%family:-26 %do_it%gone_car:51 %do_it%how_long:-66 %do_it%leave_me:51 %do_it%message:53
%do_it%money:-63 %do_it%on_way:-29 %do_it%place:33 %do_it%question:-92 %do_it%refuse:92 %do_it%shift_it:53
%do_it%wrong_one:-69 %doubt%gone_car:-47 %doubt%how_long:66 %doubt%lift:34 %doubt%message:-44 %doubt%odometer:-28
%doubt%pay_day:-32 %doubt%place:40 %doubt%question:-49 %doubt%refuse:-145 %doubt%staff:25 %doubt%wrong_one:-37
%elsewhere:-42 %elsewhere%fails:28 %elsewhere%place:31 %elsewhere%question:55 %elsewhere%refuse:38 %fails%gone_car:35
%fails%how_long:-29 %fails%place:32 %fails%refuse:-54 %fails%start_again:-37 %fails%thanks:26 %family:-34
%family%odometer:50 %family%question:41 %family%refuse:-30 %family%shift_it:44 %family%wrong_one:-31 %gone_car:-135
%gone_car%money:65 %gone_car%question:77 %gone_car%refuse:53 %gone_car%staff:-36 %gone_car%start_again:28
%gone_car%wrong_one:58 %how_long:-100 %how_long%leave_me:32 %how_long%lift:26 %how_long%money:36 %how_long%on_way:-55
%how_long%opening:34 %how_long%place:-53 %how_long%question:120 %how_long%refuse:-52 %how_long%shift_it:-60
%how_long%thanks:-28 %leak:-36 %leave_me:-114 %leave_me%money:36 %leave_me%on_way:60 %leave_me%refuse:56 %lift:46
%lift%question:-26 %machine:-85 %machine%refuse:-38 %meaning%phone:-28 %meaning%question:-40 %meaning%refuse:120
%message:-51 %message%start_again:-117 %message%thanks:45 %message%wrong_one:-31 %money:-78 %money%on_way:68
%money%place:-29 %money%refuse:-34 %money%shift_it:59 %money%smoke_smell:-76 %money%start_again:33 %noise:26
%noise%refuse:36 %odometer:-31 %odometer%question:36 %odometer%refuse:-35 %on_way:-108 %on_way%place:-35
%on_way%question:91 %on_way%refuse:94 %on_way%thanks:79 %on_way%wrong_one:51 %opening:-55 %opening%question:56
%opening%shift_it:-25 %pay_day:-99 %pay_day%refuse:-35 %pay_day%season:-38 %phone:-176 %phone%refuse:-58 %place:-90
%place%question:42 %place%shift_it:54 %place%staff:30 %place%start_again:44 %question:-173 %question%refuse:169
%question%start_again:78 %question%thanks:26 %question%who:-85 %question%wrong_one:45 %refuse:-117 %refuse%shake:-40
%refuse%shift_it:57 %refuse%staff:-40 %refuse%start_again:40 %refuse%wrong_one:73 %season:-101 %shake:-109
%shift_it:-196 %shift_it%start_again:-33 %smoke_smell:-104 %staff:-40 %staff%thanks:26 %staff%wrong_one:-83
%thanks:-53 %who:-144 %wrong_one:-119 @?:-50 @after_visit:227 @after_visit_cant_complain:56
@after_visit_not_really:-40 @car:409 @confirm:228 @confirm_:68 @confirm_still_good:39 @confirm_stop:-836
@confirm_stop_si:-62 @confirm_thumbsup:51 @day:-108 @later:-91 @nothing:-481 @odometer:-162 @offers:-808 @reading:-69
@time:-110 @times:-66 @walk_in:175 @walk_in_will_do:34 ^_$:122 ^_a:-131 ^_absolutely:38 ^_aceptan:-27
^_affirmative:27 ^_afirmativo:53 ^_ahi:263 ^_al:27 ^_all:89 ^_alright:40 ^_ando:-49 ^_any:-53 ^_appreciate:-54
^_apunteme:67 ^_are:-65 ^_as:-28 ^_asap:-27 ^_ay:-29 ^_be:-132 ^_better:38 ^_blue:45 ^_both:33 ^_bueno:45 ^_call:-33
^_can:-58 ^_cancel:-48 ^_cant:80 ^_chevere:85 ^_claro:175 ^_como:131 ^_confirmado:32 ^_confirmo:58 ^_correct:25
^_correcto:35 ^_could:-77 ^_count:79 ^_cual:-58 ^_cuando:-39 ^_cuanto:-163 ^_dale:156 ^_de:173 ^_definitely:58
^_deme:-26 ^_desde:-31 ^_dont:31 ^_el:-99 ^_en:-108 ^_es:-60 ^_esta:92 ^_estoy:-63 ^_eta:-56 ^_everything:75
^_fine:107 ^_free:25 ^_fri:-31 ^_friday:-48 ^_go:128 ^_got:-25 ^_hagale:122 ^_half:-44 ^_have:-32 ^_hay:-69 ^_heck:40
^_hm:-29 ^_hmm:-48 ^_how:-148 ^_hoy:-55 ^_id:142 ^_if:60 ^_is:-174 ^_kids:-32 ^_la:44 ^_late:-27 ^_let:-58 ^_lets:-35
^_listo:36 ^_luego:-64 ^_mal:-35 ^_manana:-95 ^_mas:-45 ^_me:79 ^_meh:-49 ^_mi:-26 ^_might:84 ^_min:-41 ^_monday:-40
^_muy:45 ^_nah:-25 ^_need:-49 ^_neither:-165 ^_nel:-26 ^_next:-28 ^_ninguno:-77 ^_none:-28 ^_nop:-49 ^_nos:33
^_not:-179 ^_ok:274 ^_olvide:-30 ^_on:-59 ^_one:-32 ^_orale:55 ^_para:-68 ^_paso:-31 ^_perfecto:68 ^_pesimo:-28
^_please:105 ^_por:90 ^_puedo:-37 ^_que:-197 ^_quedo:93 ^_quiero:-46 ^_rain:31 ^_reschedule:-42 ^_running:-46
^_sale:202 ^_saturday:-35 ^_se:-110 ^_sedan:33 ^_see:156 ^_should:-27 ^_si:640 ^_sign:69 ^_sigue:66 ^_simon:114
^_sin:70 ^_sip:172 ^_smooth:28 ^_sold:34 ^_something:-48 ^_sounds:65 ^_still:155 ^_stop:-112 ^_sure:253 ^_tengo:-40
^_thank:-171 ^_that:163 ^_there:-34 ^_thumbsup:77 ^_thurs:-40 ^_thursday:-107 ^_tienen:-48 ^_todo:179 ^_tomorrow:-28
^_truck:32 ^_tuesday:-35 ^_va:138 ^_voy:-58 ^_what:-230 ^_when:-45 ^_whenever:-25 ^_where:-34 ^_which:-54 ^_white:36
^_who:-44 ^_why:63 ^_will:37 ^_wont:-49 ^_works:133 ^_would:-45 ^_wouldnt:79 ^_y:56 ^_ya:48 ^_ye:85 ^_yep:194
^_yes:284 ^_yo:-37 a:-30 a_$:28 a__day:-26 a__en:32 a__hora:-45 a__late:-27 a__of:-36 a__one:-44 a__out:28
a__sale:-51 a__si:-69 a_como:-60 a_little:-30 a_nice:-39 a_plan:32 a_poder:-47 a_ver:-32 about_it:-26 absolutely:38
absolutely_$:29 add:41 adelante:36 adelante_$:31 affirmative:27 afirmativo:53 afuera_$:29 agarro:-31 agarro_el:-28
agendeme:118 agendeme_$:115 ahead:124 ahi:351 ahi_$:-129 ahi__caigo:54 ahi__vemos:66 ahi_estare:102 ahi_estoy:73
ahi_les:39 ahi_me:29 ahi_nos:66 ahi_voy:82 ahorita:-25 al:40 al_cien:45 alarma:35 algo:-28 all__for:63 all_good:97
all_set:-27 alla:123 alla_$:46 almost:-33 already:-42 alright:-42 also:35 alta:-41 am:39 am_i:35 ambos:30 an:41
an_appointment:83 an_hour:-25 and:84 and__you:65 and_early:31 and_thank:56 ando:-44 ando_bien:-49 another:-45
antes:46 any__next:32 any_day:36 anymore:-57 anymore_$:-56 anything:-35 apenas:-46 appointment_$:55 appreciate_it:-37
apunteme:94 are:-32 are_you:-31 arm:99 arm_$:60 as:92 as_well:47 asi:-85 asi_$:-44 asi__bien:-53 asi_es:45 ask_me:45
asking:-27 at:-37 at_$:-44 at_all:47 at_if:29 at_it:25 at_the:-57 at_work:-28 atras:41 aunque:26 away:-40 away_$:-37
awesome:33 ay:-26 ayer:-25 azul:117 azul_$:35 back:-42 bad:118 bad_$:39 bank:26 be:-72 be__at:-39 be__by:-59
be__in:-62 be_by:-29 be_happier:31 be_late:-34 be_ready:-27 be_there:129 been__to:54 before_$:-44 bells:43
bells_on:33 bet:33 better:61 better_than:32 bien:-154 bien_$:-72 bien_el:-27 bien_gracias:25 blanca:63 blanca__la:30
bless:-28 blue:70 blue_one:25 book:131 book_it:37 book_me:89 both__them:41 both_of:41 bout:30 bright:31
bright__early:31 bright_and:31 bring:83 bring__in:38 bring_it:74 btw:80 bueno:52 but__much:-83 but__need:28
but_how:-68 but_i:26 but_it:-57 but_the:-76 but_yes:38 butter:30 by:47 c:107 caigo:58 caigo_$:53 calendar:29
cambiado:35 cambieme:-26 cambios:28 came:-60 came_up:-34 camino:-32 can:-126 can__come:-31 can__do:-68 can__make:98
can__me:-45 can_text:-50 can_we:-58 cancel:-121 cancel_$:-25 cancel_it:-120 cancel_my:38 cancel_the:-39 cancelen:49
cant:26 cant__in:-39 cant__it:-104 cant_come:-60 cant_complain:58 cant_do:-62 cant_make:-68 cant_say:91 cant_wait:93
car:-106 car_is:-51 card:-25 caro:-102 caro_$:-39 cars:-46 center:-40 chance:-25 change:28 change_$:28 changed:42
changed_$:54 changed__my:28 changed_my:-26 changed_on:27 changes:29 check:-27 check_$:-26 chevere:83 chido:52 cien:44
cien_$:38 cita:-88 cita_$:-92 claro:179 claro_el:37 coffee:25 come:-89 come_friday:-31 come_in:-47 coming_$:-49
como:57 como_la:25 como_no:235 como_nuevo:34 como_sale:-51 como_si:-30 complain:58 complain_$:56 complaints:74
con_el:45 con_los:-25 con_ustedes:-28 confirmado:25 confirmo_$:-26 conmigo:44 conmigo_$:51 contento:25 correct:36
correcto:47 could:-61 couldnt:40 couldnt__happier:31 count:111 count__in:103 count__out:-27 count_me:76 cual:-53
cual__el:-34 cual_es:-25 cualquier__de:25 cuando:29 cuanto_$:-103 cuanto_cuesta:65 cuanto_sale:-55 cuanto_se:29
cuanto_vale:-36 cuente:46 cuente_conmigo:34 cuenten:29 cuesta:63 cuesta_$:41 da:-25 dale:165 dale_el:33 darle:29
date:54 date_$:55 day_$:-48 day__week:31 days:-30 de__dos:-57 de__si:-28 de_atras:27 de_la:-38 de_los:-37
de_manana:-32 de_mi:57 de_que:-54 de_una:210 de_verdad:-27 definitely:64 dejaron:-27 dejo:-73 del:28 desde:-128
desde_que:-71 despues:25 dia:-37 dia_$:-56 dias:-72 dias_$:-27 did:-58 did__last:-51 did_that:-34 did_you:-29
didnt:-68 diga:56 digo:-65 dijo:33 dios:30 dios_me:27 dios_quiere:-36 do:134 do_$:207 do__day:-27 do__do:-40
do__get:-28 do__guys:-25 do__instead:-33 do__need:-45 do__work:-25 do_friday:-26 do_i:-68 do_it:148 do_monday:-33
do_you:-113 done:73 done_$:47 dont:110 dont__my:56 dont__you:-26 dont_know:-25 dont_see:55 dont_think:-32
dont_want:-28 door:-30 door_$:-25 dos:-30 down:117 down_$:163 down_on:-27 down_the:-34 drive:-62 drive_to:-56
drives:70 drives_like:61 dude:31 dura:-25 earlier:-32 early_$:39 el__a:91 el__antes:29 el__cuanto:42 el__despues:48
el__dia:-26 el__el:29 el__en:48 el__no:-38 el__pero:-38 el__que:26 el__se:-36 el__si:-63 el__va:-29 el_azul:111
el_carro:38 el_de:28 el_lunes:41 el_martes:-32 el_miercoles:27 el_otro:27 el_sedan:50 el_seguro:-39 el_trabajo:40
else:-36 en_$:-66 en__dias:-35 en__lista:51 en__tarde:25 en__trabajo:27 en_camino:-35 en_el:45 en_la:74 en_orden:37
en_pie:110 en_unos:-37 end:31 end_$:30 entonces:28 entonces_$:25 entro:40 entro_$:44 es:-55 es_$:26 es_la:33
es_malo:-29 ese_servicio:25 espero:-45 espero_$:-47 esta:-35 esta__caro:-52 esta_bien:57 esta_bueno:30
esta_perfecto:-25 estamos:-35 estare:121 estaria:-54 estas:31 este:-32 estoy_$:44 estoy_ahi:-26 estoy_bien:-80
eta:-56 even:33 every:-42 everything:56 everything_was:44 excelente:33 explain:-36 falta:35 falta_$:44 far:41
favor:-28 favor_$:-86 fierro:31 fierro_$:32 find:-48 fine:-75 fine_$:-102 fine__me:47 fine_with:34 fine_you:31
firme:38 fix:-39 fix_it:-46 for__reminder:36 for_friday:-30 for_it:76 for_that:-45 for_thursday:76 for_tomorrow:40
forever:-47 forget:-38 forgot:-56 free__my:28 freno:-25 fri:-59 friday_$:-48 friday_afternoon:48 fridge:28 from:-40
front:56 fuera:-31 fui:-45 full:-25 get:129 get__done:152 get__in:32 get_it:93 get_there:-33 gets:38 give:-34 go:156
go__it:47 go_ahead:136 go_for:49 go_on:28 going__be:-30 good:-67 good_$:-127 good_for:39 got_any:-42 got_it:50
got_to:30 grab:26 gracias__todo:-43 gracias_por:-68 grand:27 grand_$:28 gratis:-26 great__you:-52 guess:100
gustaria:85 gusto:-64 guy:-31 hablo:-32 hablo_$:-31 hacerlo:46 hacerlo_$:35 haciendo:-28 had:-72 had_to:-47
hagale:122 hago:-52 hago_$:-49 happier:37 happy:60 has:63 hasnt:28 hasta:40 have:-91 have__wrong:-35 have_a:-105
have_the:-40 have_to:36 hay:31 hay__si:-35 hay_problema:80 hay_que:43 he:30 heads:-37 heads_up:-37 hecho:35
hecho_$:40 heck:39 hell:31 hicieron:-26 high:27 hija:31 history:27 hit:-27 hm:-29 hmm:-48 hora:-53 hour:-37 hours:-27
how:-74 how__is:-105 how__was:-25 how__will:-31 how_do:-37 hoy:-55 hoy_mismo:-36 humo:-75 humo_$:-53 i:40 i__a:-40
i__an:74 i__come:-28 i__see:38 i__so:107 i__there:-38 i__you:-42 i_be:-25 i_cant:-49 i_come:-45 i_did:26 i_do:81
i_forgot:-25 i_get:-51 i_go:-32 i_guess:85 i_have:-37 i_make:115 i_need:-29 i_should:39 i_want:29 i_wont:26 id:161
id__to:76 id_be:44 id_like:52 id_rather:-27 idea:150 idea_$:138 if__like:-77 if_i:38 if_you:43 igual:-31 ill:185
ill__by:26 ill__on:-37 ill__over:38 ill__the:26 ill__there:211 ill_be:146 ill_come:32 ill_pass:-30 ill_stop:38
ill_swing:31 im_all:-41 im_coming:39 im_down:203 im_fine:-128 im_good:-176 im_in:90 im_not:-46 im_ready:127
imagen:-32 in_$:155 in__you:28 in_law:27 in_the:-27 instead:-64 instead_$:-53 interesa:100 interesa_$:54 interest:-33
interested:55 interested_$:59 ir:-65 ir_$:-68 is:-90 is__a:27 is__address:33 is__for:25 is__ok:-30 is__really:-27
is__yes:31 is_a:89 is_been:-29 is_fine:-57 is_good:73 is_history:31 is_it:-68 is_my:-31 is_off:-42 is_ok:-33
is_right:33 is_that:-48 is_the:56 is_this:-37 is_your:48 ish:52 ish_$:43 isnt:-26 issues:61 it_$:41 it__a:45
it__and:-35 it__at:-39 it__me:39 it__needed:38 it__next:-32 it__on:31 it__time:38 it__to:-25 it__under:30 it__you:32
it_a:28 it_anymore:-30 it_be:-65 it_done:52 it_is:144 it_on:59 it_shakes:-60 it_to:-64 jaja:61 jaja_si:33 jala:51
jale:131 jale_$:140 jefe:51 jefe_$:28 jueves_si:-28 just__i:-27 keep_me:40 kids:-25 know:-38 know_$:-25 know_it:35
know_you:-40 la__ahi:26 la__no:-54 la__o:29 la__pero:26 la__que:48 la_alarma:34 la_blanca:63 la_cita:-79 la_lista:48
la_otra:54 la_puede:-25 la_troca:41 las_$:52 las_si:-46 last:-96 last_week:-65 late_$:90 later:-27 law:27 le:-100
le__a:28 le_digo:-26 le_sale:-78 left:-60 lejos:-28 les:-26 les_caigo:31 less:36 let:-58 let_me:-43 lets:-84
lets__it:50 lets__the:-40 lets_do:53 lets_get:68 lets_out:-41 lets_say:-46 like__plan:32 like_a:39 like_to:43
lista:47 listo:-37 listo_$:-63 little:-26 little_late:-26 live__the:25 llego_en:-51 llevarlo:54 llevarlo_$:60
llevo:-60 lo:-41 lo__asi:-33 lo_dejo:-62 lo_hago:-36 lo_que:47 lo_vendi:25 located_$:25 lol:49 long_$:48
long_will:-29 look:39 los:-76 los_dos:-41 lost:-41 love:45 luego:-141 luego_$:-68 luego_les:-40 lunes_$:-53
lunes_a:37 made:-28 make_it:-107 mal:-112 mal_$:-78 malo:-41 manana__la:27 manejando:-41 manejando_$:-28 maravilla:29
martes:-39 martes__la:27 martes__le:-53 martes_en:29 martes_pero:-57 mas:-70 mas__si:-29 mas_de:-29 maybe:-38 me_$:81
me__a:-25 me__como:-46 me__con:-26 me__cuanto:40 me__de:-41 me__el:-62 me__la:-31 me__the:42 me__un:-28 me__una:-28
me__y:-34 me_again:-67 me_agarro:-35 me_es:-25 me_gustaria:86 me_gusto:-65 me_in:132 me_interesa:110 me_la:-34
me_late:217 me_off:-38 me_olvida:37 me_out:-34 me_parece:39 me_puedo:53 me_queda:-53 me_sale:-48 me_to:35 me_twice:26
me_up:122 me_va:-40 meh:-50 mejor:-57 mero:-25 mi_cita:-34 mi_hija:31 miercoles:40 miercoles_o:30 miercoles_que:32
might:86 might__well:107 might_as:107 millas:-28 millas_$:-29 min:-196 min_$:-103 mind:30 mins:-26 mismo_dia:-26
miss:106 miss_it:120 modo:68 monday_$:-32 monday__be:-33 monday_instead:-38 money:-45 month:-30 morning:34
morning_$:-28 morning_to:43 mother__law:29 mother_in:29 moved:25 much__it:-87 much_is:-81 muchas__por:-38 mucho:-40
mucho_$:-26 muy:-60 muy_caro:-39 my__will:39 my_arm:81 my_end:41 my_way:-33 myself:-26 nah:-25 need:-73 need_$:-28
need_to:-46 neither:-167 neither_$:-81 nel:-26 never:-26 new:66 new_$:42 ni:-56 ni_modo:68 nice:-55 night:-59
night_$:-76 nine:38 nine_$:26 ninguno:-84 ninguno__los:-37 ninguno_de:-37 ninos:-27 no:-94 no_$:-45 no__a:-98
no__at:48 no__bien:-96 no__conmigo:-39 no__el:-29 no__esperen:-25 no__good:-29 no__gusto:-65 no__hago:-34 no__here:67
no__interesa:-77 no__ir:-40 no__is:-60 no__la:-25 no__preocupe:36 no__problema:81 no__puedo:53 no__que:-33
no__that:83 no_complaints:74 no_gracias:-35 no_hay:105 no_im:-35 no_issues:61 no_it:-47 no_la:26 no_me:-112
no_more:37 no_podre:-35 no_problem:96 no_puedo:-56 no_quedo:-50 no_quiero:-30 no_se:99 no_sigue:-65 no_thanks:-30
no_that:-34 no_to:109 no_voy:-134 no_worries:56 none:-31 none__them:-27 none_of:-28 noon_$:26 nop:-49 nop_$:-49
nos:121 nos__manana:45 nos_vemos:131 not:-45 not_$:215 not__yet:-75 not_a:110 not_coming:-69 not_interested:-37
not_really:-47 not_sure:-145 not_to:27 now:-129 now_$:-95 nuevo:38 nuevo_$:27 number:-44 number_$:-35 o:56 of:-44
off:-114 off_$:-27 off__now:-39 off__schedule:-34 off_the:-41 oh__another:-27 oil:38 oil_$:25 ok:-31 ok_$:-295
ok__drive:-57 ok__el:34 ok__i:25 ok__the:-57 ok_el:50 ok_friday:36 ok_to:-82 olvida:37 olvide:-30 on:75 on_$:117
on__end:41 on__way:-62 on_it:30 on_me:37 onda:32 one:-53 one_$:-37 one_with:25 opening:34 or:51 orale:55 orden:37
otra:44 otra_semana:27 out:-108 out_$:-103 over_here:-41 own:-40 palabra:31 para:-38 para__si:-41 para_el:-40
para_que:-29 para_un:-27 parking:32 parking_$:44 pasa:-81 pasa__no:-35 pasa_si:-79 pasela:-25 pass:-65 pass_$:-31
pay:41 pedal:-28 pedi__en:30 pedi_permiso:30 pena:-26 perdida:-32 perdon:-36 perfecto:48 permiso:25 permiso__el:30
permiso_en:30 pero:90 pero__me:33 pero__no:34 pero__que:43 pero_cuanto:-92 pero_el:-28 pero_le:-50 pero_que:29
pero_ya:30 phone:-52 phone_$:-41 pie:104 pie_$:58 pierdo:25 plan:47 plan_$:52 planning:69 planning__it:69
planning_on:69 please:-98 please_$:-229 please_and:54 please_do:112 please_dont:52 please_take:-37 podemos:-32
poder:-49 podre:-35 pop:26 por:34 por__no:200 por_el:-32 por_favor:-27 por_mi:26 por_perdida:-30 por_que:102
por_supuesto:43 por_todo:-39 preocupe:36 pricey:32 problem:64 problem_$:77 problema:59 puede:-83 puede_$:-40 puedo:49
pues:134 pues_$:52 pues_no:-56 pues_si:33 pues_ya:30 puntual:33 purrs:34 puse:30 put_me:35 que:61 que_$:-33 que__a:39
que__con:-41 que__el:33 que__lo:29 que__que:41 que__si:-97 que_hora:-28 que_le:-46 que_no:165 que_pasa:-74
que_trae:35 que_va:-28 queda:-141 queda_$:-61 quedo:34 quedo_$:-47 quedo_como:27 queja:28 quick:28 quien:-35
quien_me:25 quiere:-35 quiere_$:-26 quiero:26 quiet:35 rain:30 rather:-36 ready:103 ready_$:105 really:-58
really_$:-40 rear:29 reminder:36 reschedule:-63 reschedule_please:-36 right:-128 right_$:-158 ring:-28 ring_me:-29
roll:29 ruido_$:-25 run:36 running:-67 running_late:-34 sabado:29 sabado_a:26 sabado_si:-28 sale:-82 sale_$:-40
sale__blanco:-27 sale__que:35 sale_humo:-79 salio:-35 say:133 say__th:-37 say_no:144 say_the:-37 schedule:58
schedule_$:40 school:-38 school__out:-34 school_lets:-34 se:-108 se__a:-25 se__llevo:-41 se__mas:61 se__olvida:37
se__que:30 se__va:-34 se_preocupe:36 se_puede:-56 se_siente:27 se_va:-55 sea:37 sedan:108 see:338 see__then:95
see__tomorrow:47 see_you:289 seguro:-34 send:-26 ser_$:-27 set:70 set__up:64 set_for:29 set_it:58 shakes:-78 shall:29
should:26 si_$:-33 si__cuanto:-68 si__dejo:-68 si__favor:39 si__interesa:41 si__jueves:32 si__lo:-37 si__lunes:38
si__perfecto:-40 si__pero:47 si__puede:-37 si__que:43 si__quiere:-36 si__si:-28 si_ahi:28 si_cuanto:42 si_dios:-35
si_el:65 si_es:-33 si_fuera:-27 si_gracias:50 si_hay:-37 si_lo:-96 si_manana:46 si_me:-67 si_no:-96 si_por:43
si_quiero:116 si_se:-56 si_senor:25 si_voy:108 si_y:72 si_yo:-31 siente:27 sign:120 sign__up:136 sign_me:128
sigue__pie:71 sigue_en:71 simon:115 sin:100 sin_falta:72 sip:172 sip_$:172 skip:-30 slide:-27 slow:-25 smooth:29
so:126 so_$:74 so_i:40 so_no:-33 so_yes:43 sold:-34 sold_$:50 sold_the:-27 something__up:-32 something_came:-32
sometime:60 sorry:-68 sorry_$:-56 start:-43 steering:-37 steering__is:-40 steering_wheel:-43 still:67 still__the:-34
still_coming:41 still_good:32 still_on:106 stop:-102 stop_$:-179 stop_by:60 suena:28 supuesto:43 sure:129 sure__me:26
sure_thing:33 swing_by:26 switch:-30 ta:32 take:-66 take__off:-40 take_me:-47 talk:-35 taller:-31 tambien:64 tan:-31
tarde:-29 te:-68 text:-92 text__again:-67 text_me:-91 thank_you:52 thanks__the:32 that:27 that_$:58 that__be:107
that_car:-25 that_done:66 that_is:32 that_last:-51 that_was:-26 that_would:105 the__again:26 the__dont:30
the__for:-32 the__go:29 the__i:29 the__now:-44 the__one:26 the__please:-32 the__thing:39 the__thursday:-25
the__up:-38 the__what:30 the__wheel:-39 the_appointment:-49 the_bank:29 the_blue:34 the_brakes:27 the_car:-74
the_front:54 the_heads:-37 the_one:31 the_phone:-27 the_rear:25 the_reminder:36 the_steering:-42 the_th:-38
the_total:31 the_white:29 the_wrong:-42 them:-66 them_$:-38 then:98 then_$:74 there:86 there_$:137 there__the:34
there_at:-38 there_by:-34 there_in:-66 they:-36 think:-57 think__is:41 think__it:-52 think_it:42 third:-27 this:-25
though:76 though_$:34 through:-36 thumbsup:77 thumbsup_$:77 thurs:48 thurs_$:26 thursday__is:26 thursday_at:70
thursday_morning:-30 thursday_what:27 till:-25 time_$:-58 to_$:36 to__it:61 to__me:34 to__my:-47 to__that:60
to__the:34 to__to:-66 to__you:51 to_ask:44 to_be:-43 to_call:26 to_change:-26 to_come:-27 to_drive:-46 to_get:96
to_make:-25 to_pay:39 to_set:29 to_stop:26 to_that:80 to_the:53 toca_$:26 today:-44 today_$:-52 todo:156 todo_$:-70
todo__orden:42 todo_bien:96 todo_en:45 told_my:25 tomo:31 tomo_la:31 tomorrow_$:44 tomorrow_at:33 took:-36
top_off:-31 total:40 trabajo:42 trabajo_$:36 traded:-28 traffic:-31 trafico:-30 trafico_$:-32 treated:-28 tren:-30
tren_$:-29 troca:47 truck:60 tues:-91 tuesday_$:-30 twist:74 twist__arm:57 twist_my:75 two:-27 uh:25 un:-125 una:104
uno:-46 uno_$:-28 unos:-43 unsubscribe:-25 up:-41 up_$:91 use:31 usted:-30 ustedes:-54 ustedes_$:-56 va:-95 va_$:-25
va_a:-88 va_el:42 va_en:-85 vale:-66 vale_$:-32 vamos:62 vamos_a:42 vegas:-39 vegas_$:-39 vemos:123 vemos_$:44
vemos_manana:45 ver:-65 ver_si:-45 verdad:-29 very:25 vibrates:-31 viene:25 voy_$:117 voy__camino:-29 voy__estar:35
voy__poder:-32 voy_en:-30 voy_pero:33 voy_saliendo:-30 vuelta:-28 wait:70 wait_$:83 waiting:-42 was:-93 wasnt:-29
water_$:27 way_$:40 we:-89 we__be:34 we__it:-28 we_do:-46 we_sold:-31 wednesday:50 wednesdays:-27 week:-52
weekend:-27 weekend_$:-25 well:50 went:-41 what_$:-46 what__i:47 what__the:44 what__your:58 what_a:31 what_is:77
wheel__off:-41 wheel_is:-45 when:-174 which:-53 white:61 who:-48 who_is:-33 why:114 why_$:-78 why__i:-40 why__you:-30
why_do:-43 why_is:-31 why_not:334 why_would:-39 will:60 will__be:-52 will__there:88 will_be:82 will_bring:27
will_do:126 will_it:-67 win:31 with:25 with__i:-25 with_me:31 wobbles:42 wont:-25 wont__it:53 wont__there:-42
wont_be:-55 work:-47 work_on:-26 works:-80 works_$:-71 works__me:60 works_but:-73 works_for:45 worries:55 worse:-86
worse_$:-72 would:-50 would__be:-43 would__need:-38 would_be:59 would_i:-48 would_it:-32 wouldnt:80 wouldnt__it:55
wouldnt_miss:55 wrong:-58 wrong_number:-27 y_$:136 y__lo:-26 y__va:-27 y_cuanto:55 y_me:-25 y_ni:-27 y_si:-52 ya:157
ya_$:76 ya__llego:-42 ya__para:-28 ya__voy:-35 ya_casi:-28 ya_esta:-35 ya_mero:-30 ya_no:-39 ya_que:45 ya_quedo:-28
ya_voy:-58 ye:85 yeah_$:64 yeah_no:-68 yep:207 yep__you:28 yes:596 yes_$:55 yes__do:26 yes__how:-49 yes__i:45
yes__is:36 yes__it:-71 yes__me:35 yes__works:-58 yes__you:29 yes_and:60 yes_but:-44 yes_friday:36 yes_i:53
yes_monday:34 yes_please:88 yes_what:27 yet:-66 yet_$:-66 yo:-102 you_$:48 you__a:-25 you__at:66 you__fix:-42
you__it:120 you__text:-50 you_bet:28 you_can:-30 you_do:-38 you_even:26 you_got:42 you_like:-80 you_then:104
you_think:39 you_tomorrow:55 you_win:31 you_work:-25 your_address:26
"""
