"""What speaks for and against `accept`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "accept"
BIAS = -96
WEIGHTS = """\
#abad:27 #abla:-22 #ablo:-27 #abso:33 #acep:53 #acer:54 #acie:-24 #acio:-32 #addr:22 #aded:-27 #afic:-25 #afir:56
#agal:153 #agam:25 #agar:-35 #agen:124 #agua:-29 #ahea:118 #aigo:50 #aint:69 #aiti:-40 #akes:-82 #alar:34 #alca:-28
#algo:-45 #alin:-22 #alio:-25 #alla:139 #ally:-39 #almo:-30 #alre:-44 #alri:112 #also:37 #alto:27 #ambo:27 #amen:23
#amos:23 #anca:56 #ance:-108 #anda:41 #ando:-65 #anej:-37 #ange:89 #anni:77 #anot:-31 #anto:-36 #anym:-51 #anyt:-34
#anzo:-23 #apar:27 #apen:-33 #appe:-36 #appi:40 #appy:38 #apun:178 #arda:24 #arde:-34 #arli:-25 #arlo:98 #arly:22
#arma:37 #aron:-152 #arqu:-31 #arri:31 #arro:-22 #asad:-38 #asis:-32 #aski:-25 #atch:-51 #ated:-26 #ates:-31
#athe:-34 #atio:-25 #ativ:47 #atte:-29 #augh:23 #avin:-22 #avis:-33 #away:-35 #awes:38 #aybe:-29 #ayer:-27 #azul:107
#back:-35 #bado:26 #bble:39 #bear:35 #beat:-22 #bell:38 #bett:61 #biad:27 #biem:-34 #bien:-56 #bios:32 #blan:54
#blem:143 #blue:76 #body:-27 #book:84 #brak:23 #bran:31 #brar:-26 #brat:-26 #brin:54 #brok:-30 #bscr:-26 #bsol:33
#bsup:69 #buen:57 #butt:28 #bvio:78 #caig:46 #camb:-37 #came:-59 #canc:-89 #cant:35 #canz:-25 #card:-24 #caro:-112
#cars:-37 #casa:-22 #cate:26 #cele:47 #cell:22 #cept:47 #cerl:37 #chan:52 #chas:-26 #chec:-31 #ches:-23 #chev:77
#chid:54 #choo:-36 #cita:-91 #cito:23 #clar:143 #cole:37 #come:-101 #como:41 #comp:70 #conf:42 #conm:34 #conv:23
#cool:22 #corr:26 #coun:88 #cove:25 #crat:-51 #crib:-61 #ctio:-27 #cual:-55 #cuen:63 #cues:65 #cuid:23 #culp:-29
#cupa:-35 #cupe:26 #dale:152 #dame:81 #darl:40 #date:28 #days:-93 #ddre:22 #deal:-61 #defi:61 #deja:-22 #deje:-32
#dejo:-57 #dele:235 #deme:91 #demo:-66 #depe:-34 #ders:-23 #desd:-109 #dias:-69 #dida:-25 #didn:-63 #diga:53
#digo:-62 #dine:-23 #ding:-42 #dios:40 #disc:-50 #dnes:25 #domi:-28 #done:64 #dont:96 #doub:178 #down:47 #dura:-24
#each:-26 #eads:-33 #eady:72 #eage:-37 #eall:-48 #eals:-49 #ease:-86 #eate:-31 #echo:37 #ecib:-23 #ecir:23 #ecto:57
#edan:108 #edes:-61 #eeke:-32 #eeri:-31 #efin:61 #egas:-39 #egat:-24 #egre:-31 #egui:24 #egun:-30 #egur:-22
#eith:-134 #ejan:-31 #ejor:-46 #ejos:-28 #eken:-28 #elen:41 #ello:31 #ells:27 #else:-54 #elta:-22 #emas:-29 #emel:-31
#emor:-40 #emos:67 #empt:22 #enas:-32 #enda:34 #ende:100 #endo:-45 #ends:-29 #engo:-25 #enme:-49 #ensa:-25 #ente:77
#eocu:31 #epen:-43 #eque:37 #erco:41 #erda:-43 #erdi:-47 #eren:-25 #eres:92 #erin:-28 #erlo:34 #ermi:24 #eron:-66
#erro:38 #erta:47 #eryt:54 #esar:-22 #esch:-55 #escr:-34 #esda:24 #esde:-109 #esen:40 #esom:38 #espa:-35 #essa:-25
#essi:41 #esta:27 #este:22 #etim:60 #ette:56 #evar:53 #ever:35 #exac:27 #exce:23 #expl:-52 #fall:31 #falt:53
#feel:-32 #ffir:43 #fico:-25 #fier:36 #find:-33 #fine:-72 #fini:49 #firm:166 #five:-22 #flui:-25 #fore:-46 #forg:-95
#frid:30 #from:-31 #fron:37 #gale:141 #gati:-24 #gend:154 #gets:34 #ghty:154 #ging:-26 #gist:35 #give:-31 #goma:24
#gone:-25 #good:-56 #grat:-26 #gres:-30 #gual:-41 #gues:83 #guie:-31 #guna:24 #guno:-73 #gunt:-35 #guro:-24 #habl:-47
#hace:48 #haci:-24 #haga:172 #hago:-40 #hake:-73 #half:-31 #hang:60 #hank:-22 #happ:53 #have:-99 #head:76 #hech:35
#here:44 #hese:-24 #heve:77 #hich:-48 #hici:-26 #hido:54 #hing:65 #hink:-26 #hird:-27 #hite:76 #hone:-48 #hool:-35
#hora:-39 #hors:22 #houg:75 #houl:36 #hour:-84 #hous:-24 #hrou:-30 #humb:22 #humo:-75 #hurs:33 #ible:-36 #ibra:-23
#icie:-31 #idea:151 #idnt:-63 #ieme:-32 #iend:-67 #ient:-24 #ierc:46 #iero:-70 #ierr:41 #iert:22 #igua:-41 #imag:-31
#imon:105 #impo:-29 #inde:31 #iner:-25 #info:-26 #ingo:-28 #ingu:-62 #init:62 #inos:-25 #inst:-68 #inte:74 #ints:64
#inut:-46 #irma:104 #irme:39 #iscu:-33 #issu:61 #iste:24 #isti:-34 #itch:-31 #itel:56 #ithe:-134 #itin:-40 #itte:24
#ittl:-26 #ives:62 #jaja:22 #jala:38 #jale:138 #jalo:41 #jand:-40 #jaro:-38 #jefe:30 #just:-46 #keep:24 #kend:-28
#kids:-37 #king:-27 #lain:78 #lanc:57 #lann:83 #lant:-24 #larm:36 #laro:149 #last:-80 #late:-28 #lcan:-25 #ldnt:87
#leas:-93 #left:-52 #lego:-27 #lejo:-24 #lema:25 #lets:-59 #leva:69 #levo:-29 #lico:-23 #lien:-26 #lier:-25 #like:51
#line:-24 #litt:-26 #llas:-22 #lleg:-42 #llev:41 #lmos:-29 #loca:37 #lost:-30 #love:46 #lrea:-44 #lrig:112 #lueg:-133
#luid:-25 #lune:33 #lute:33 #made:-37 #mage:-32 #malo:-33 #mane:-24 #marc:-27 #marq:-27 #mart:-42 #mati:73 #mayb:-29
#mber:-38 #mbos:27 #mbsu:69 #mejo:-45 #mela:-45 #mero:-27 #mess:-22 #meti:52 #mier:37 #migh:100 #migo:30 #mill:-52
#mind:47 #minu:-46 #miss:114 #modo:54 #mone:-40 #mont:-32 #moot:62 #more:-81 #moro:-31 #most:-40 #move:-45 #mpla:129
#mpos:-25 #mpre:-41 #mpty:22 #much:-62 #myse:-27 #ncel:-88 #ncie:25 #ndal:28 #ndam:85 #ndem:106 #ndin:-24 #need:-52
#neit:-163 #neja:-30 #nero:-34 #next:28 #nfir:27 #nfri:36 #nged:38 #nges:32 #ngin:-23 #ngun:-62 #nice:-50 #nigh:-57
#nine:43 #ning:-26 #nite:62 #nmig:34 #none:-35 #nsid:23 #nste:-64 #nsub:-24 #ntem:71 #nten:49 #nter:23 #ntre:-41
#ntro:33 #ntua:32 #nuev:26 #numb:-55 #nute:-22 #nymo:-51 #nyth:-29 #obbl:37 #oble:130 #obra:-23 #obvi:78 #oday:-57
#odem:-26 #oder:-42 #odre:-26 #oles:25 #olut:33 #omas:24 #omet:36 #ompl:115 #ompr:-28 #onda:27 #oney:-40 #onfi:26
#onmi:34 #onth:-32 #ooki:-33 #ooth:62 #oral:30 #orde:33 #orev:-42 #orge:-35 #orgo:-57 #orks:-61 #orre:49 #orry:-63
#orse:-71 #osib:-27 #othi:41 #otra:37 #ough:68 #ould:33 #ount:82 #ours:55 #paci:-33 #pana:30 #para:-56 #pare:24
#pasa:-67 #pase:-32 #pass:-55 #pena:-56 #pend:-34 #pens:-28 #pera:27 #perd:-75 #pero:32 #phon:-37 #pier:47 #ping:23
#plai:78 #plan:124 #plea:-88 #poco:-25 #pode:-69 #podr:-29 #pone:-22 #pong:-24 #pose:22 #posi:-30 #pped:-22 #ppen:-25
#ppie:40 #ppos:22 #pran:23 #prec:30 #preg:-35 #preo:30 #pric:37 #prin:-30 #prob:149 #pued:-34 #pues:146 #punt:208
#purr:32 #puse:28 #qued:-84 #quej:71 #quem:-34 #quic:31 #rade:-43 #rado:-25 #raff:-27 #rafi:-25 #rage:-24 #rake:24
#rale:30 #rand:38 #raro:-33 #rasa:-30 #rase:-29 #ratc:-51 #rate:-33 #rath:-33 #rcol:37 #rdad:-27 #rdan:23 #rden:33
#rdid:-35 #rdon:-33 #read:64 #real:-60 #rear:22 #reas:25 #reat:-22 #reco:-24 #rect:60 #rega:-43 #regr:-31 #regu:-42
#remo:-24 #rent:-35 #reoc:30 #resa:71 #resc:-55 #rese:22 #reve:-36 #rget:-35 #rgot:-57 #ribe:-30 #rice:36 #ried:-22
#ries:40 #rlie:-25 #rmat:74 #robl:137 #roke:-30 #roll:44 #rong:-51 #ront:27 #rrec:67 #rrin:31 #rtes:-39 #ruck:62
#runn:-54 #ryth:54 #saba:26 #sado:-39 #sale:-62 #sali:-25 #scho:-35 #scra:-69 #scri:-62 #scul:-29 #seda:112 #self:-34
#seno:30 #sent:24 #sett:23 #shak:-79 #shou:36 #sibl:-33 #side:49 #sign:104 #simo:73 #sist:-45 #skin:-25 #skip:-23
#slow:-24 #smok:24 #smoo:62 #sobr:-24 #sold:-79 #solu:33 #some:59 #sorr:-59 #soun:-30 #spac:-39 #sper:-24 #spon:-26
#ssue:61 #stam:-25 #stan:-34 #star:38 #stea:-68 #stee:-26 #stil:52 #stir:-37 #stop:-110 #stoy:-27 #stre:26 #suav:24
#subs:-26 #suen:31 #sues:68 #supp:24 #supu:41 #sure:112 #swin:27 #swit:-27 #tain:22 #take:-61 #talk:-42 #tall:-28
#tamb:55 #tamo:-28 #tant:-24 #tare:93 #tari:26 #tart:-45 #tche:-30 #tead:-64 #tede:-60 #teer:-32 #tely:97 #teme:97
#tend:-30 #tent:26 #tere:108 #text:-89 #than:-23 #that:46 #them:-69 #then:83 #ther:-109 #they:-28 #thir:-28 #this:-28
#thou:65 #thro:-22 #thum:22 #thur:33 #till:45 #ting:-58 #tion:-31 #tivo:28 #toca:27 #toda:-74 #todo:134 #took:-26
#tory:35 #trad:-46 #traf:-52 #trai:-30 #treg:-23 #tren:-24 #troc:26 #truc:59 #trun:22 #tter:76 #tual:24 #tues:-86
#twis:72 #uand:36 #uant:-49 #uart:-24 #uave:24 #ubsc:-26 #ucks:-22 #ueda:-118 #uede:-84 #uedo:72 #uego:-134 #ueja:61
#uelt:-23 #uena:52 #ueno:28 #uent:61 #uert:23 #uess:83 #uest:95 #uevo:36 #uick:31 #uien:-50 #uldn:87 #ulpe:-28
#umbe:-55 #umbs:22 #unes:33 #unni:-54 #unos:-35 #unsu:-24 #unta:-24 #unte:67 #unto:110 #untu:24 #upad:-42 #uper:24
#uppo:22 #upue:41 #urse:93 #usta:62 #uste:-72 #usto:-59 #utel:33 #utes:-24 #utte:29 #vale:-55 #vamo:68 #varl:56
#veci:22 #vega:-40 #vemo:101 #venc:23 #vere:77 #very:38 #vibr:-28 #vide:-26 #vien:29 #ving:-43 #wait:27 #wasn:-29
#week:-90 #well:57 #went:-25 #weso:38 #when:-147 #whic:-48 #whit:76 #wild:24 #will:76 #wing:31 #wipe:24 #wist:72
#witc:-27 #wobb:37 #wont:-26 #work:-123 #worr:27 #wors:-100 #wron:-51 #xact:27 #xcel:29 #xpla:-41 #yeah:37 #ymor:-51
#ysel:-27 #ythi:24 %again_later:-131 %again_later%agree:49 %again_later%call_off:47 %again_later%car:45
%again_later%car_part:46 %again_later%doubt:29 %again_later%elsewhere:24 %again_later%gone_car:38
%again_later%message:-65 %again_later%money:26 %again_later%question:25 %again_later%staff:39
%again_later%start_again:-34 %again_later%thanks:33 %again_later%wrong_one:55 %agree:452 %agree%bad:-52
%agree%bring:328 %agree%busy:57 %agree%call_off:-132 %agree%car:34 %agree%doubt:145 %agree%elsewhere:101
%agree%fails:30 %agree%family:64 %agree%gone_car:129 %agree%how_long:198 %agree%lift:70 %agree%machine:24
%agree%meaning:24 %agree%message:-69 %agree%noise:48 %agree%odometer:35 %agree%on_way:167 %agree%opening:36
%agree%phone:66 %agree%place:24 %agree%question:122 %agree%season:23 %agree%shift_it:72 %agree%smoke_smell:-57
%agree%staff:175 %agree%start_again:45 %agree%thanks:-62 %agree%wrong_one:93 %away:-112 %away%bring:48
%away%call_off:51 %away%doubt:-42 %away%leave_me:44 %away%noise:37 %away%on_way:116 %away%question:-25
%away%refuse:28 %away%wrong_one:39 %bad:-69 %bad%call_off:47 %bad%car_part:-61 %bad%doubt:-38 %bad%meaning:122
%bad%money:-35 %bad%on_way:-28 %bad%refuse:198 %bad%staff:-24 %bring%busy:60 %bring%call_off:55 %bring%car_part:28
%bring%family:44 %bring%gone_car:26 %bring%how_long:-25 %bring%leave_me:-62 %bring%meaning:22 %bring%money:43
%bring%phone:22 %bring%refuse:45 %bring%thanks:62 %bring%wrong_one:61 %busy:28 %busy%refuse:-45 %busy%thanks:27
%call_off:-114 %call_off%car:-23 %call_off%car_part:-24 %call_off%do_it:86 %call_off%doubt:32 %call_off%elsewhere:30
%call_off%fails:-89 %call_off%family:-36 %call_off%how_long:79 %call_off%leave_me:70 %call_off%lift:103
%call_off%money:-45 %call_off%odometer:-26 %call_off%on_way:92 %call_off%place:-26 %call_off%question:176
%call_off%refuse:135 %call_off%shake:-28 %call_off%shift_it:114 %call_off%wrong_one:24 %car:57 %car%car_part:52
%car%elsewhere:60 %car%fails:28 %car%gone_car:-73 %car%how_long:-24 %car%leave_me:25 %car%lift:27 %car%noise:29
%car%on_way:24 %car%question:24 %car%shake:-25 %car_part:-106 %car_part%do_it:30 %car_part%leak:23
%car_part%money:-37 %car_part%odometer:49 %car_part%on_way:41 %car_part%place:23 %car_part%question:82
%car_part%shake:46 %do_it:-129 %do_it%gone_car:55 %do_it%how_long:-52 %do_it%leave_me:35 %do_it%message:24
%do_it%money:-39 %do_it%question:-64 %do_it%refuse:42 %do_it%season:-22 %do_it%shift_it:42 %do_it%staff:-32
%do_it%wrong_one:-43 %doubt:36 %doubt%gone_car:-42 %doubt%how_long:65 %doubt%leave_me:24 %doubt%lift:39
%doubt%message:-46 %doubt%on_way:33 %doubt%pay_day:-22 %doubt%place:47 %doubt%question:-44 %doubt%refuse:-135
%doubt%season:-22 %doubt%staff:27 %doubt%wrong_one:-35 %elsewhere:-31 %elsewhere%fails:23 %elsewhere%message:-22
%elsewhere%place:30 %elsewhere%question:42 %elsewhere%refuse:34 %elsewhere%who:27 %elsewhere%wrong_one:22
%fails%gone_car:28 %fails%on_way:-25 %fails%place:32 %fails%refuse:-52 %fails%staff:26 %fails%thanks:23 %family:-31
%family%odometer:28 %family%on_way:-34 %family%shift_it:43 %gone_car:-135 %gone_car%meaning:22 %gone_car%money:56
%gone_car%question:78 %gone_car%refuse:45 %gone_car%season:-23 %gone_car%staff:-31 %gone_car%wrong_one:44
%how_long:-117 %how_long%leave_me:22 %how_long%lift:22 %how_long%money:56 %how_long%on_way:-87 %how_long%place:-65
%how_long%question:121 %how_long%refuse:-56 %how_long%shift_it:-38 %how_long%start_again:23 %how_long%thanks:-24
%leak:-32 %leave_me:-128 %leave_me%money:35 %leave_me%on_way:32 %leave_me%refuse:52 %leave_me%smoke_smell:22 %lift:43
%lift%opening:-29 %lift%question:-23 %machine:-61 %machine%refuse:-32 %meaning%phone:-26 %meaning%question:-31
%meaning%refuse:118 %meaning%wrong_one:-24 %message:-67 %message%start_again:-94 %message%thanks:43
%message%wrong_one:-39 %money:-88 %money%place:-25 %money%question:-41 %money%shift_it:54 %money%smoke_smell:-73
%noise%refuse:23 %odometer%on_way:-35 %on_way:-116 %on_way%phone:-23 %on_way%place:-36 %on_way%question:84
%on_way%refuse:100 %on_way%shift_it:29 %on_way%smoke_smell:26 %on_way%thanks:82 %on_way%wrong_one:49 %opening:-55
%opening%question:48 %pay_day:-55 %pay_day%refuse:-34 %pay_day%season:-36 %phone:-159 %phone%refuse:-59 %place:-101
%place%question:44 %place%refuse:-26 %place%shift_it:26 %place%staff:25 %place%start_again:41 %question:-212
%question%refuse:191 %question%season:31 %question%start_again:72 %question%who:-61 %question%wrong_one:55
%refuse:-102 %refuse%shake:-36 %refuse%shift_it:62 %refuse%staff:-32 %refuse%wrong_one:63 %season:-78 %shake:-95
%shift_it:-220 %shift_it%start_again:-28 %smoke_smell:-116 %staff:-33 %staff%thanks:22 %staff%wrong_one:-79
%start_again:-27 %start_again%wrong_one:-30 %thanks:-31 %who:-106 %wrong_one:-111 @?:-22 @after_visit:226
@after_visit_cant_complain:52 @after_visit_not_really:-35 @car:444 @confirm:179 @confirm_still_good:34
@confirm_stop:-833 @confirm_stop_si:-68 @confirm_thumbsup:50 @day:-72 @later:-101 @nothing:-494 @odometer:-155
@offers:-756 @reading:-55 @time:-85 @times:-41 @walk_in:155 @walk_in_will_do:36 ^_$:103 ^_a:-108 ^_absolutely:33
^_aceptan:-25 ^_affirmative:30 ^_afirmativo:44 ^_ahi:215 ^_al:30 ^_all:67 ^_alright:36 ^_andale:23 ^_ando:-48
^_any:-43 ^_appreciate:-56 ^_apunteme:64 ^_are:-59 ^_as:-38 ^_asap:-23 ^_ay:-23 ^_be:-131 ^_better:32 ^_blue:41
^_both:24 ^_call:-34 ^_can:-41 ^_cancel:-41 ^_cant:86 ^_changed:-22 ^_claro:143 ^_como:134 ^_confirmado:25
^_confirmo:47 ^_correct:28 ^_correcto:26 ^_could:-66 ^_count:80 ^_cual:-55 ^_cuando:-36 ^_cuanto:-135 ^_dale:129
^_de:139 ^_definitely:55 ^_deme:-28 ^_dont:39 ^_el:-65 ^_en:-89 ^_es:-35 ^_esta:96 ^_estoy:-43 ^_eta:-53
^_everything:79 ^_fine:113 ^_fri:-30 ^_friday:-42 ^_go:104 ^_going:-23 ^_good:-22 ^_got:-27 ^_half:-44 ^_have:-28
^_hay:-65 ^_hm:-27 ^_hmm:-49 ^_how:-112 ^_hoy:-47 ^_id:122 ^_if:67 ^_ill:-45 ^_is:-153 ^_kids:-27 ^_la:47 ^_le:-43
^_let:-46 ^_lets:-26 ^_llego:-35 ^_lo:-25 ^_luego:-51 ^_mal:-30 ^_manana:-70 ^_mas:-32 ^_me:98 ^_meh:-44 ^_mejor:-24
^_mi:-23 ^_might:97 ^_monday:-40 ^_muy:24 ^_nada:24 ^_need:-43 ^_neither:-163 ^_next:-26 ^_ninguno:-63 ^_none:-30
^_nop:-50 ^_not:-159 ^_nothing:35 ^_ok:253 ^_olvide:-22 ^_on:-48 ^_one:-25 ^_orale:30 ^_para:-72 ^_paso:-29
^_perfect:27 ^_perfecto:55 ^_please:98 ^_por:132 ^_puedo:-31 ^_que:-161 ^_quedo:81 ^_quiero:-52 ^_re:24
^_reschedule:-38 ^_running:-38 ^_sale:219 ^_saturday:-36 ^_se:-89 ^_sedan:27 ^_see:128 ^_seguro:27 ^_should:-23
^_si:564 ^_sign:63 ^_simon:84 ^_sin:27 ^_sip:168 ^_something:-38 ^_sounds:62 ^_still:121 ^_stop:-106 ^_sure:231
^_tengo:-28 ^_thank:-163 ^_that:134 ^_the:27 ^_there:-27 ^_thumbsup:69 ^_thurs:-40 ^_thursday:-103 ^_tiene:-22
^_tienen:-30 ^_todo:193 ^_truck:31 ^_tuesday:-32 ^_va:107 ^_voy:-31 ^_we:22 ^_what:-188 ^_when:-42 ^_where:-24
^_which:-44 ^_white:37 ^_who:-28 ^_why:58 ^_will:51 ^_wont:-44 ^_works:142 ^_would:-40 ^_wouldnt:56 ^_y:88 ^_ye:91
^_yep:184 ^_yes:270 ^_yo:-42 ^_you:-30 a:-51 a_$:36 a__day:-23 a__hora:-25 a__late:-26 a__of:-33 a__one:-44 a__si:-48
a_como:-59 a_hacer:-25 a_las:23 a_little:-26 a_plan:33 a_poder:-42 a_ser:-24 about_it:-23 absolutely:33
absolutely_$:30 add:45 address:22 adelante:29 adelante_$:35 affirmative:30 afirmativo:44 again_$:-32 agarro:-23
agendeme:115 agua:-31 agua_$:-22 ahead:118 ahi:264 ahi_$:-108 ahi__caigo:38 ahi__vemos:60 ahi_estare:82 ahi_estoy:42
ahi_le:33 ahi_nos:59 ahi_voy:53 al:38 al_cien:47 alarma:28 alcanzo:-23 algo:-26 all:31 all__for:65 all_good:97
alla:106 alla_$:35 almost:-29 already:-44 alright:-42 also:37 alta:-38 an:74 an__change:22 an_appointment:86
an_oil:22 and:43 and__you:79 and_thank:64 and_what:27 andale:23 andale_pues:23 ando:-37 ando_bien:-52 another:-34
any:-23 any__next:35 any_day:42 anymore:-51 anymore_$:-53 anything:-29 apenas:-33 appointment_$:52 appreciate:28
appreciate_it:-42 apunteme:93 are:-22 arm:72 as:87 as_butter:22 as_well:62 asi:-73 asi_$:-41 asi__bien:-49 asking:-25
at:-35 at_$:-51 at__you:25 at_all:52 at_if:31 at_the:-49 at_work:-22 atras:38 avisar_$:-24 away:-35 away_$:-30
awesome:38 ayer:-27 azul:97 azul_$:31 back:-31 bad:120 bad_$:33 be:-90 be__at:-33 be__by:-53 be__in:-66 be_a:-35
be_late:-30 be_there:110 beat:-22 beat__to:-22 been__to:52 before_$:-30 bells:38 bells_on:28 bet:26 better:61
better_$:32 better_than:37 bien:-105 bien_$:-78 bien_el:-25 bien_lo:23 blanca:67 blanca__la:28 bless:-25 blue:76
blue_$:22 blue_one:22 book:126 book_it:39 book_me:91 both__them:37 both_of:37 bring:50 bring__in:34 bring_it:50
btw:76 bueno:36 but:-66 but__much:-80 but__need:22 but_how:-62 but_i:36 but_it:-56 but_the:-65 butter:29 by:31
by_$:-25 by_tomorrow:23 caigo:44 caigo_$:39 call_me:-36 cambiar:-24 cambieme:-25 cambieme_la:-22 cambios:32 came:-46
came_up:-31 can:-85 can__come:-27 can__do:-67 can__make:103 can__me:-49 can_do:-26 can_i:32 can_text:-45 can_we:-57
cancel:-119 cancel_it:-130 cancel_my:39 cancel_the:-41 cancelen:40 cant:30 cant__in:-43 cant__it:-92 cant_come:-60
cant_complain:54 cant_do:-56 cant_make:-66 cant_say:100 cant_wait:90 car:-85 car_$:-22 car_is:-42 caro:-101
caro_$:-38 carro_$:-33 cars:-37 cars_$:-22 center:-37 changed:38 changed__mind:-22 changed_my:-23 changes:32
check_$:-23 chevere:68 cien:45 cien_$:38 cita:-78 cita_$:-63 claro:145 claro_$:25 claro_el:23 come:-98 come_$:-24
come_friday:-24 come_in:-42 coming_$:-30 coming__the:28 como:47 como_no:218 como_si:-25 complain:54 complain_$:52
complaints:67 con_el:45 con_los:-22 con_ustedes:-42 confirmo_$:-25 conmigo:34 conmigo_$:48 correct:28 correcto:39
could:-26 couldnt:29 count:104 count__in:97 count_me:78 cual:-65 cual__el:-32 cualquier_dia:28 cuando:36 cuanto:-22
cuanto_$:-105 cuanto_cuesta:74 cuanto_sale:-60 cuanto_se:25 cuanto_tarda:24 cuanto_va:-26 cuanto_vale:-25 cuente:43
cuesta:65 cuesta_$:48 cuesta__cuanto:26 cuesta_y:25 dale:129 date:35 day_$:-46 day__week:32 de:39 de__dos:-55
de__otra:22 de__si:-25 de_atras:22 de_los:-47 de_mi:30 de_que:-24 de_una:178 de_verdad:-26 definitely:61 dejaron:-35
dejo:-57 del:31 del_jueves:-23 deme:-22 desde:-109 desde_que:-57 dia:-37 dia_$:-47 dias:-69 dias_$:-27 did:-64
did__last:-52 did_that:-52 didnt:-63 diga:33 digo:-62 dios:40 do:152 do_$:197 do__do:-34 do__get:-25 do__guys:-23
do__instead:-38 do__know:-26 do__need:-43 do__work:-25 do_friday:-22 do_i:-64 do_it:131 do_you:-98 domingo:-23
done:66 done_$:36 done_last:-26 dont:96 dont__my:61 dont__you:-29 dont_know:-26 dont_need:-30 dont_see:52
dont_think:-29 dont_want:-33 door:-25 door_$:-23 down:108 down_$:163 down_on:-27 down_the:-32 drive:-63 drive_to:-55
drives:64 drives_like:59 earlier:-25 early_$:23 either:29 el_$:-26 el__a:82 el__antes:35 el__cuando:22 el__cuanto:40
el__despues:35 el__dia:-28 el__en:40 el__no:-44 el__para:24 el__pero:-30 el__por:-25 el__se:-29 el__si:-43
el__temprano:25 el__va:-24 el_azul:82 el_carro:25 el_de:29 el_lunes:52 el_martes:-29 el_miercoles:29 el_sedan:43
el_seguro:-31 el_trabajo:45 else:-36 else_$:-22 empty:22 en_$:-45 en__dias:-34 en__sale:-22 en__tarde:44
en__trabajo:26 en_camino:-23 en_el:36 en_la:34 en_orden:38 en_pie:79 en_unos:-31 end:29 end_$:24 entro:25 entro_$:28
es:-66 es__mismo:24 es_la:37 es_malo:-29 ese_servicio:22 espero:-39 espero_$:-45 esta:-37 esta__caro:-52 esta_bien:43
estamos:-25 estan:-25 estare:95 estaria:-45 este:-29 estimate_$:22 estoy:-26 estoy_$:42 estoy_bien:-69 eta:-53
every:-34 everything:54 everything_$:-25 everything_was:44 explain:-36 falta:29 falta_$:39 far:48 favor_$:-62
feel:-24 fierro:35 fierro_$:35 fin:-22 find:-31 fine:-72 fine_$:-106 fine__me:54 fine_with:38 firme:32 five:-22
fix:-35 fix_it:-44 fluid:-24 for__reminder:38 for_it:72 for_me:32 for_that:-43 for_thursday:76 for_tomorrow:31
forever:-42 forget:-35 forgot:-57 fri:-55 friday_$:-37 friday_afternoon:48 friday_also:22 from:-31 front:37 fuera:-29
fui:-38 get:96 get__done:143 get__in:22 get_it:87 get_there:-31 gets:34 give:-28 go:136 go_ahead:128 go_for:52
going__be:-27 gone:-25 gone_$:-22 good:-61 good_$:-115 good__you:22 good_for:32 got:32 got_any:-47 got_it:47
got_to:35 gracias__todo:-44 gracias_por:-67 gratis:-24 great_$:26 great__you:-54 guess:83 gustaria:70 gusto:-53
guy:-27 hablo:-27 hablo_$:-26 hace__ruido:22 hacerlo:40 hacerlo_$:35 haciendo:-24 had:-65 had_to:-37 hago:-40
hago_$:-39 half:-31 happier:40 happy:39 has:71 have:-92 have__call:27 have__wrong:-32 have_a:-90 have_someone:22
have_the:-50 hay_problema:81 he:26 heads:-30 heads_up:-30 hecho:43 hecho_$:45 heck:36 hicieron:-25 history:26 hit:-30
hm:-27 hmm:-49 hora:-38 hora_$:-22 hora_abren:23 hour:-48 hours:-36 hours_$:-33 how:-62 how__is:-89 how__was:-24
how__will:-29 how_do:-36 how_i:-22 how_much:-22 hoy:-68 hoy__si:-23 hoy_mismo:-29 humo:-72 humo_$:-51 i:44 i__an:76
i__come:-29 i__i:-25 i__my:-24 i__see:38 i__so:111 i__there:-38 i__use:22 i__you:-32 i_cant:-45 i_come:-43 i_do:79
i_forgot:-28 i_get:-60 i_go:-27 i_guess:77 i_had:-24 i_have:-29 i_make:116 i_should:36 i_sold:-24 i_took:23 i_want:28
i_work:-26 i_would:23 id:137 id__to:80 id_like:51 id_rather:-25 idea:145 idea_$:135 if:24 if_i:44 igual:-38
igual_$:-22 ill:137 ill__by:29 ill__it:-22 ill__on:-28 ill__there:188 ill_be:121 ill_stop:34 ill_swing:31 im:-26
im_all:-29 im_coming:41 im_down:190 im_good:-159 im_in:69 im_not:-31 imposible:-25 in_$:150 in_law:23 instead:-64
instead_$:-54 interesa:84 interesa_$:48 interest:-34 interested:61 interested_$:65 ir:-34 ir_$:-53 is:-112
is__address:42 is__cost:23 is__really:-24 is_a:44 is_been:-23 is_fine:-65 is_good:75 is_it:-62 is_my:-37 is_off:-38
is_ok:-33 is_right:38 is_that:-35 is_the:67 is_this:-35 is_up:-23 is_your:36 ish:53 ish_$:42 issues:68 it_$:37
it__and:-29 it__at:-49 it__day:24 it__is:-23 it__me:27 it__next:-24 it__on:27 it_a:38 it_anymore:-30 it_be:-54
it_done:43 it_is:120 it_to:-37 it_tomorrow:-22 jaja:60 jaja_si:34 jala:42 jale:138 jale_$:142 jefe:30 jueves_$:23
jueves_si:-23 just:-41 keep_me:33 kids:-37 know:-25 know_it:23 know_you:-41 la__del:26 la__no:-42 la__o:33 la__que:50
la_blanca:62 la_cita:-79 la_otra:53 la_troca:27 las_$:44 las_si:-40 last:-79 last_time:25 last_week:-65 late_$:88
later:-24 law:23 le:-99 le_digo:-27 le_sale:-76 left:-52 left_$:-25 lejos:-24 les:-22 less:48 let:-36 let_me:-28
lets:-62 lets__it:42 lets__the:-32 lets_do:37 lets_get:54 lets_out:-33 lets_say:-45 like:32 like__plan:33 like_a:37
like_to:45 listo:-39 listo_$:-47 little:-26 live__the:28 llanta:-23 llego:-26 llego_en:-34 llevarlo:54 llevarlo_$:60
llevo:-29 lo:-74 lo__por:-31 lo_dejo:-59 lo_hago:-33 lo_que:28 lo_vendi:29 located:22 located_$:26 lol:50
long_will:-30 look:22 los:-90 los_dos:-34 los_ninos:-24 lost:-30 lot_$:27 love:44 low:-24 luego:-133 luego_$:-61
luego_les:-33 lunes:33 lunes_$:-45 lunes__las:24 lunes_a:40 lunes_temprano:24 made:-37 make_it:-98 mal:-81 mal_$:-55
malo:-30 manejando:-45 martes:-40 martes__la:23 martes__le:-54 martes_en:25 martes_pero:-53 mas:-71 maybe:-29 me:32
me_$:119 me__como:-55 me__de:-24 me__el:-78 me__la:-33 me__the:42 me__y:-33 me_again:-52 me_agarro:-28 me_es:-22
me_gustaria:70 me_gusto:-63 me_in:110 me_interesa:93 me_la:-26 me_late:197 me_off:-60 me_on:23 me_out:-26
me_parece:35 me_pueden:-22 me_puedo:47 me_queda:-52 me_sale:-38 me_to:37 me_up:129 meh:-46 mejor:-45 mi_cita:-30
miercoles:37 miercoles_o:33 might:100 mil:-38 millas:-31 millas_$:-27 min:-164 min_$:-93 mind:36 minutes:-24
mismo_dia:-30 miss:107 miss_it:116 modo:60 monday__be:-35 money:-32 money_$:-23 month:-30 more:-30 much:-32
much__it:-78 much_is:-74 muchas:-23 muchas__por:-39 muchas_gracias:-23 mucho_$:-25 muy:-70 muy_caro:-39 muy_mal:-24
my__one:-23 my__will:24 my_arm:72 my_end:36 my_mind:-22 myself:-27 need:-70 need_$:-28 need__appointment:-23
need_a:24 need_to:-30 neither:-163 neither_$:-80 new:57 new_$:53 next:28 ni:-67 ni_modo:61 nice:-48 night:-60
night_$:-68 nine:43 nine_$:26 ninguno:-72 ninguno__los:-37 ninguno_de:-37 ninos:-25 no:-93 no_$:-60 no__a:-91
no__at:49 no__bien:-84 no__cancele:22 no__conmigo:-27 no__good:-26 no__gusto:-63 no__hago:-31 no__here:48
no__interesa:-77 no__ir:-26 no__is:-62 no__la:-23 no__nada:-30 no__preocupe:40 no__problema:83 no__puedo:47
no__que:-25 no__si:27 no__that:91 no_complaints:67 no_gracias:-31 no_hay:103 no_im:-35 no_issues:68 no_it:-42
no_lo:-27 no_me:-97 no_podre:-26 no_problem:87 no_puedo:-45 no_quedo:-48 no_quiero:-28 no_se:70 no_thanks:-27
no_that:-33 no_voy:-117 no_worries:52 none:-33 none__them:-29 none_of:-30 noon_$:29 nop:-50 nop_$:-50 nos:94
nos_vemos:109 not:-49 not_$:171 not__with:-22 not__yet:-67 not_a:97 not_coming:-56 not_interested:-32 not_really:-42
not_sure:-133 nothing:30 now:-101 now_$:-75 nuevo:32 nuevo_$:23 number:-55 number_$:-30 o:39 off:-125 off__for:23
off__now:-36 off__schedule:-36 off_the:-42 oh:-22 ok_$:-266 ok__drive:-55 ok__i:27 ok__it:28 ok__me:23 ok__the:-57
ok_el:36 ok_friday:35 ok_to:-70 olvide:-22 on:41 on_$:113 on__end:36 on__list:22 on__way:-45 on_it:37 on_my:22
onda:28 one:-51 one_$:-46 or:39 orale:30 orden:38 other:23 otra:33 otra_semana:31 out:-81 out_$:-95 over:-32
over_here:-30 own:-37 para:-46 para__me:29 para__si:-37 para_el:-27 para_un:-24 pasa:-78 pasa__no:-35 pasa_si:-77
pass:-47 pass_$:-27 pay:36 pedal:-24 pena:-22 perdida:-31 perdon:-31 perfecto:35 permiso:22 pero:71 pero__no:27
pero__que:31 pero_cuanto:-85 pero_le:-51 pero_que:28 pero_ya:28 phone:-43 phone_$:-30 pie:77 pie_$:51 pierdo:28
plan:46 plan_$:44 planning:70 please:-94 please_$:-218 please__me:-25 please_and:64 please_do:109 please_dont:57
please_take:-40 pm_$:24 podemos:-26 poder:-42 podre:-26 por__no:181 por_el:-33 por_favor:-28 por_la:-26 por_mi:22
por_perdida:-30 por_que:111 por_supuesto:37 por_todo:-39 porque_no:22 preocupe:40 problem:65 problem_$:68 problema:60
puede:-59 puede_$:-41 puedo:45 pues:94 pues_$:55 pues_ya:28 puro:22 puse:28 put_me:39 que:30 que_$:-40 que__con:-40
que__el:38 que__me:30 que__si:-82 que_le:-41 que_no:168 que_pasa:-77 que_tan:-33 que_viene:28 queda:-121 queda_$:-54
quedo:27 quedo_$:-46 queja:24 quick:36 rather:-33 re:24 ready:116 ready_$:127 really:-48 really_$:-35 rear:25
reason:23 reminder:38 reschedule:-54 reschedule_please:-33 right:-138 right_$:-134 ring:-31 ring_me:-26 roll:32
run:24 running:-50 running_late:-27 sabado:28 sabado_a:23 sale:-60 sale_$:-43 sale__blanco:-25 sale__que:42
sale_humo:-73 salio:-25 same:-25 say:117 say__th:-34 say_no:120 say_the:-34 schedule:47 schedule_$:38 school:-35
school__out:-31 school_lets:-31 scratch:-22 se:-157 se__llevo:-39 se__mas:29 se__va:-33 se_lo:-22 se_me:-32
se_preocupe:40 se_puede:-53 se_va:-40 sedan:101 see:319 see__then:94 see__tomorrow:42 see_you:274 seguro:-24 ser:-40
ser_$:-28 set:59 set__up:59 set_for:31 set_it:54 shakes:-83 should:38 should__be:-22 si:38 si_$:-40 si__bien:24
si__cuanto:-66 si__dejo:-50 si__favor:30 si__interesa:30 si__jueves:31 si__lo:-34 si__lunes:38 si__pero:28
si__puede:-38 si__que:45 si_cuanto:43 si_el:55 si_fuera:-28 si_gracias:44 si_hay:-41 si_lo:-85 si_manana:31 si_me:-29
si_no:-91 si_por:30 si_quiero:76 si_se:-44 si_si:-26 si_voy:96 si_y:73 si_ya:25 sign:122 sign__up:138 sign_me:127
sigue__pie:61 sigue_en:61 simon:86 sin:83 sin_falta:60 sip:168 sip_$:168 skip:-22 slow:-24 smooth:29
smooth__butter:22 smooth_as:22 so:95 so_$:77 so_i:25 so_yes:40 sold:-78 something__up:-28 something_came:-28
sometime:60 sorry:-59 sorry_$:-47 start:-40 steering:-31 steering__is:-37 steering_wheel:-39 still:58 still__the:-36
still_coming:34 still_good:27 still_on:87 stop:-109 stop_$:-178 stop_by:42 suena:31 suena_bien:24 supuesto:37
sure:117 sure__me:31 sure_thing:32 swing:27 swing_by:35 switch:-27 take:-58 take__off:-50 take_me:-57 talk:-32
tambien:55 tan:-37 tarda:27 tarda_$:23 tarde:-27 te:-56 te_digo:-25 temprano:23 text:-81 text__again:-57 text_me:-72
thank_you:66 thanks__the:26 that:45 that_$:63 that__be:93 that_done:60 that_is:39 that_last:-51 that_was:-24
that_would:90 the:-22 the__at:-28 the__for:-26 the__go:27 the__going:22 the__it:22 the__now:-35 the__please:-31
the__the:25 the__thing:27 the__thursday:-26 the__up:-31 the__what:22 the__wheel:-36 the_appointment:-52 the_blue:41
the_brakes:30 the_car:-57 the_front:33 the_heads:-30 the_other:22 the_reminder:38 the_same:-25 the_steering:-39
the_total:28 the_trunk:22 the_way:-26 the_white:32 the_wrong:-38 them:-69 them_$:-39 then:83 then_$:63 there:60
there_$:142 there_at:-33 there_by:-26 there_in:-63 these:-24 they:-22 think:-34 think__is:47 think__it:-42
think_it:50 third:-27 this:-28 this_$:-27 this_friday:23 though:61 though_$:29 through:-30 thumbsup:69 thumbsup_$:69
thurs:48 thurs_$:27 thursday__is:28 thursday_at:68 thursday_morning:-32 thursday_what:29 thursdays:-26 time:-32
time_$:-54 to_$:-23 to__it:67 to__my:-39 to__please:-22 to__that:61 to__the:33 to__to:-60 to__you:45 to_ask:28
to_be:-30 to_call:29 to_change:-25 to_come:-22 to_drive:-42 to_get:102 to_pay:30 to_that:89 to_the:36 toca:29
toca_$:23 today:-49 today_$:-45 todo:146 todo_$:-70 todo__orden:43 todo_bien:96 todo_en:40 tomorrow:23 tomorrow_$:38
tomorrow_at:34 too:22 too_$:27 took:-26 total:36 trabajo:36 traded:-27 traffic:-27 trafico:-25 trafico_$:-24
treated:-22 tren:-22 troca:26 truck:64 truck_$:29 trunk:22 trunk_$:22 tues:-89 tuesday_$:-28 tuesday__how:-22
twist:60 two:-42 un:-90 una:109 uno:-39 uno_$:-29 unos:-35 unsubscribe:-24 up:-54 up_$:103 use:28 usted:-27
ustedes:-60 ustedes_$:-55 va:-83 va_$:-27 va__ser:-31 va_a:-54 va_en:-69 va_que:23 vale:-55 vamos:45 vamos_a:40
vegas:-39 vegas_$:-39 vemos:102 vemos_$:48 ver:-56 ver_si:-25 verdad:-29 very:27 vibrates:-31 viene:32 voy_$:115
voy__camino:-22 voy__poder:-30 voy_en:-22 voy_saliendo:-27 wait:68 wait_$:88 waiting:-40 warranty_$:23 was:-71
was_fixed:-22 wasnt:-29 way:-34 we:-55 we__be:38 we__it:-22 we__that:-22 we_do:-45 we_sold:-33 we_will:25
wednesday:46 wednesdays:-25 week:-42 week_$:-30 weekend:-28 weekend_$:-27 well:38 well_$:25 went:-25 what_$:-43
what__i:29 what__the:56 what__your:49 what_are:26 what_i:-27 what_is:78 wheel__off:-37 wheel_is:-41 when:-161
where__you:25 where_are:26 which:-57 white:76 white_$:23 white_one:26 who:-52 who__this:-22 who_is:-37 why:118
why_$:-65 why__i:-37 why__you:-29 why_do:-46 why_is:-26 why_not:324 why_would:-39 will:60 will__be:-44 will__there:88
will_be:86 will_do:141 will_it:-57 will_you:-31 with__i:-23 with_me:36 wobbles:43 wont:-26 wont__it:51
wont__there:-47 wont_be:-60 work:-60 work__it:23 work_for:23 work_on:-26 works:-61 works_$:-66 works_but:-73
worries:51 worse:-93 worse_$:-68 would:-51 would__be:-32 would__need:-38 would_be:49 would_i:-37 would_it:-26
wouldnt:54 wouldnt__it:52 wouldnt_miss:52 wrong:-51 wrong_number:-24 y_$:129 y__digo:-23 y__por:24 y__va:-25
y_cuanto:67 y_ni:-27 y_si:-30 ya:130 ya_$:98 ya__hace:25 ya__llego:-22 ya__voy:-30 ya_esta:-23 ya_no:-28 ya_que:38
ya_voy:-53 ye:91 yeah:37 yeah_$:65 yeah_no:-64 yeah_ok:23 yep:199 yep__you:30 yes:517 yes_$:36 yes__do:23
yes__how:-42 yes__i:48 yes__it:-78 yes__me:41 yes__works:-61 yes__you:28 yes_and:63 yes_but:-39 yes_friday:37
yes_how:27 yes_i:52 yes_monday:35 yes_please:77 yes_stop:-24 yet:-70 yet_$:-77 yo:-88 yo_no:-25 you_$:50 you__a:-26
you__at:56 you__do:-23 you__it:127 you__me:-32 you__text:-45 you__the:-25 you_can:-31 you_got:45 you_then:102
you_think:47 you_tomorrow:51 you_work:-25 your_address:28
"""
