"""What speaks for and against `accept`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "accept"
BIAS = -93
WEIGHTS = """\
#abad:21 #abla:-18 #ablo:-18 #abso:29 #acep:43 #acer:40 #acio:-25 #aded:-21 #afic:-20 #afir:43 #agal:109 #agam:21
#agar:-26 #agen:89 #agua:-20 #ahea:87 #aigo:38 #aint:50 #aiti:-26 #akes:-58 #alar:26 #alca:-21 #algo:-34 #alio:-18
#alla:111 #ally:-30 #almo:-21 #alre:-30 #alri:77 #also:23 #alto:22 #ambo:22 #anca:43 #ance:-88 #anda:33 #ando:-50
#anej:-26 #ange:65 #anni:56 #anot:-25 #anta:-19 #anto:-30 #anym:-37 #anyt:-24 #apar:22 #apen:-26 #appe:-27 #appi:32
#appy:31 #apun:125 #arde:-30 #arli:-19 #arlo:73 #arma:29 #aron:-114 #arqu:-26 #arri:25 #asad:-30 #asis:-22 #aski:-21
#atch:-37 #ated:-19 #ates:-21 #athe:-26 #atio:-21 #ativ:37 #atte:-24 #avis:-25 #away:-24 #awes:26 #aybe:-22 #ayer:-23
#azul:85 #back:-26 #bado:20 #bble:25 #bear:29 #beat:-18 #bell:30 #bett:46 #biad:22 #biem:-27 #bien:-43 #bios:26
#blan:42 #blem:107 #blue:62 #body:-20 #book:65 #bran:23 #brar:-20 #brin:41 #brok:-21 #bscr:-21 #bsol:29 #bsup:50
#buen:49 #butt:23 #bvio:63 #caig:36 #camb:-29 #came:-44 #canc:-73 #cant:21 #canz:-19 #caro:-81 #cars:-27 #casa:-18
#cate:19 #cele:31 #cept:38 #cerl:27 #chan:35 #chas:-18 #chec:-22 #ches:-18 #chev:61 #chid:40 #choo:-27 #cita:-70
#cito:18 #clar:114 #cole:29 #come:-72 #como:33 #comp:48 #conf:36 #conm:25 #conv:20 #corr:18 #coun:66 #crat:-37
#crib:-46 #ctio:-22 #cual:-40 #cuen:48 #cues:44 #cuid:18 #culp:-22 #cupa:-24 #cupe:21 #dale:121 #dame:55 #darl:33
#date:22 #days:-71 #deal:-43 #defi:45 #deja:-18 #deje:-26 #dejo:-43 #dele:162 #deme:69 #demo:-49 #depe:-27 #desd:-84
#dias:-53 #didn:-44 #diga:42 #digo:-50 #dine:-19 #ding:-33 #dios:31 #disc:-38 #dnes:19 #domi:-23 #done:52 #dont:74
#doub:118 #down:40 #each:-21 #eads:-22 #eady:50 #eage:-26 #eall:-38 #eals:-35 #ease:-80 #eate:-23 #echo:29 #ecib:-18
#ecir:18 #ecto:44 #edan:88 #edes:-45 #eeke:-26 #eeri:-22 #efin:45 #egas:-28 #egat:-19 #egre:-24 #egui:20 #egun:-25
#eith:-99 #ejan:-21 #ejor:-37 #ejos:-22 #eken:-22 #elen:27 #ello:25 #ells:22 #else:-41 #elta:-18 #emas:-18 #emel:-26
#emor:-29 #emos:52 #empt:18 #enas:-25 #enda:22 #ende:74 #endo:-32 #ends:-22 #engo:-22 #enme:-41 #ensa:-21 #ente:60
#eocu:25 #epen:-36 #eque:29 #erco:31 #erda:-33 #erdi:-34 #eres:72 #erin:-20 #erlo:24 #ermi:18 #eron:-46 #erro:31
#erta:38 #eryt:40 #esch:-43 #escr:-24 #esda:19 #esde:-84 #esen:31 #esom:26 #espa:-29 #essa:-21 #essi:34 #esta:19
#etim:43 #ette:42 #evar:38 #even:18 #ever:32 #exac:21 #exce:18 #expl:-36 #fall:24 #falt:40 #feel:-22 #ffir:33
#fico:-20 #fier:29 #find:-27 #fine:-51 #fini:35 #firm:133 #flui:-21 #fore:-32 #forg:-70 #frid:22 #from:-24 #fron:29
#gale:99 #gati:-19 #gend:112 #gets:27 #ghty:107 #ging:-21 #gist:28 #give:-25 #goma:18 #good:-55 #grat:-21 #gres:-23
#gual:-29 #gues:61 #guie:-25 #guna:19 #guno:-58 #gunt:-28 #habl:-36 #hace:34 #haga:125 #hago:-29 #hake:-52 #half:-22
#hang:41 #happ:46 #have:-77 #head:56 #hech:28 #here:38 #hese:-20 #heve:61 #hich:-40 #hici:-19 #hido:40 #hing:56
#hink:-18 #hird:-23 #hite:61 #hone:-37 #hool:-27 #hora:-31 #hors:18 #houg:59 #houl:28 #hour:-56 #hous:-21 #hrou:-24
#humb:21 #humo:-54 #hurs:30 #ible:-26 #icie:-24 #idea:105 #idnt:-44 #ieme:-26 #iend:-49 #ient:-21 #ierc:35 #iero:-49
#ierr:31 #igua:-29 #imag:-24 #imon:85 #impo:-22 #inde:21 #iner:-20 #info:-20 #ingo:-23 #ingu:-49 #init:45 #inos:-18
#inst:-52 #inte:58 #ints:45 #inut:-37 #irma:80 #irme:32 #iscu:-25 #issu:43 #iste:18 #isti:-23 #itch:-23 #itel:41
#ithe:-99 #itin:-26 #itte:20 #ittl:-19 #ives:45 #jala:29 #jale:97 #jalo:33 #jand:-28 #jaro:-29 #jefe:23 #just:-34
#keep:22 #kend:-22 #kids:-26 #king:-24 #lain:59 #lanc:45 #lann:60 #lant:-20 #larm:28 #laro:118 #last:-60 #late:-30
#lcan:-19 #ldnt:68 #leas:-86 #leav:-18 #left:-40 #lego:-21 #lejo:-19 #lema:23 #less:19 #lets:-43 #leva:50 #levo:-21
#lico:-18 #lien:-19 #lier:-19 #like:43 #line:-19 #litt:-19 #lleg:-32 #llev:29 #lmos:-20 #loca:28 #lost:-20 #love:37
#lrea:-30 #lrig:77 #lueg:-102 #luid:-21 #lune:26 #lute:29 #made:-27 #mage:-26 #malo:-22 #marc:-19 #marq:-22 #mart:-32
#mati:57 #mayb:-22 #mber:-31 #mbos:22 #mbsu:50 #mejo:-36 #mela:-36 #mero:-23 #mess:-19 #meti:37 #mier:28 #migh:72
#migo:22 #mill:-39 #mind:32 #minu:-37 #miss:79 #modo:39 #mone:-31 #mont:-27 #moot:45 #more:-59 #moro:-21 #most:-29
#move:-30 #mpla:95 #mpos:-18 #mpre:-30 #mpty:18 #much:-42 #myse:-22 #ncel:-72 #ncie:20 #ndal:24 #ndam:59 #ndem:80
#ndin:-20 #need:-41 #neit:-122 #neja:-20 #nero:-27 #next:21 #nfir:24 #nfri:29 #nged:26 #nges:26 #ngin:-18 #ngun:-49
#nice:-35 #nigh:-40 #nine:34 #ning:-25 #nite:45 #nmig:25 #none:-28 #nsid:18 #nste:-49 #nsub:-19 #ntem:50 #nten:38
#nter:22 #ntre:-32 #ntro:23 #ntua:26 #nuev:21 #numb:-44 #nute:-18 #nymo:-37 #nyth:-20 #obbl:23 #oble:97 #obra:-18
#obvi:63 #oday:-45 #odem:-21 #oder:-31 #oles:19 #olut:29 #omet:27 #ompl:83 #ompr:-21 #onda:23 #oney:-31 #onfi:24
#onmi:25 #onth:-27 #ooki:-25 #ooth:45 #oral:27 #orde:26 #orev:-30 #orge:-27 #orgo:-42 #orks:-54 #orre:38 #orry:-52
#orse:-46 #osib:-20 #othi:30 #otra:29 #ough:53 #ould:34 #ound:-19 #ount:61 #ours:38 #paci:-27 #pana:24 #para:-44
#pasa:-48 #pase:-25 #paso:18 #pass:-41 #pena:-43 #pend:-28 #pens:-20 #pera:23 #perd:-56 #pero:32 #phon:-29 #pier:40
#ping:19 #plai:59 #plan:90 #plea:-81 #poco:-20 #pode:-51 #podr:-19 #pong:-18 #pose:18 #posi:-23 #pped:-18 #ppen:-18
#ppie:32 #ppos:18 #prec:23 #preg:-28 #preo:24 #pric:26 #prin:-25 #prob:112 #pued:-25 #pues:119 #punt:149 #purr:27
#puse:21 #qued:-66 #quej:59 #quem:-28 #quic:24 #rade:-34 #rado:-19 #raff:-21 #rafi:-20 #rage:-19 #rake:18 #rale:27
#rand:30 #raro:-25 #rasa:-23 #rase:-21 #ratc:-37 #rate:-23 #rath:-25 #rcol:29 #rdad:-20 #rdan:19 #rden:26 #rdid:-25
#rdon:-25 #read:44 #real:-48 #reas:19 #reco:-21 #rect:47 #rega:-34 #regr:-24 #regu:-34 #rent:-27 #reoc:24 #resa:57
#resc:-43 #reve:-25 #rget:-27 #rgot:-42 #ribe:-23 #rice:24 #ries:30 #rlie:-19 #rmat:58 #robl:103 #roke:-21 #roll:29
#rong:-41 #ront:21 #rrec:53 #rrin:26 #rtes:-29 #ruck:55 #runn:-43 #ryth:40 #saba:20 #sado:-30 #sale:-53 #sali:-19
#scho:-27 #scra:-52 #scri:-46 #scul:-22 #seda:92 #self:-27 #seno:24 #sent:19 #sett:19 #shak:-56 #shou:28 #sibl:-24
#side:39 #sign:76 #simo:60 #sist:-32 #skin:-21 #smok:19 #smoo:45 #sobr:-19 #sold:-61 #solu:29 #some:42 #sorr:-48
#soun:-27 #spac:-31 #spon:-20 #ssue:43 #stam:-19 #stan:-23 #star:27 #stea:-53 #sted:-18 #stee:-18 #stil:37 #stir:-25
#stop:-89 #stoy:-25 #stre:21 #suav:19 #subs:-21 #suen:24 #sues:48 #supp:19 #supu:33 #sure:97 #swin:21 #swit:-21
#take:-43 #talk:-32 #tall:-24 #tamb:40 #tamo:-22 #tant:-21 #tard:-19 #tare:71 #tari:20 #tart:-35 #tche:-22 #tead:-49
#tede:-44 #teer:-23 #tely:76 #teme:70 #tend:-25 #tent:21 #tere:83 #text:-70 #that:41 #them:-57 #then:54 #ther:-79
#they:-22 #thin:28 #thir:-23 #this:-30 #thou:50 #thro:-18 #thum:21 #thur:30 #till:32 #ting:-42 #tion:-26 #tivo:21
#toca:21 #toda:-59 #todo:102 #tory:29 #trad:-37 #traf:-40 #trai:-24 #treg:-18 #troc:22 #truc:53 #tter:58 #tual:21
#tues:-60 #twis:57 #uand:25 #uant:-41 #uart:-19 #uave:19 #ubsc:-21 #ucks:-19 #ueda:-98 #uede:-65 #uedo:61 #uego:-103
#ueja:50 #uelt:-18 #uena:43 #ueno:23 #uent:46 #uert:18 #uess:61 #uest:69 #uevo:29 #uick:24 #uien:-43 #uldn:68
#ulpe:-21 #umbe:-44 #umbs:21 #unda:-18 #unes:26 #unni:-43 #unos:-26 #unsu:-19 #unta:-20 #unte:48 #unto:78 #untu:20
#upad:-29 #uper:20 #uppo:18 #upue:33 #urse:62 #usta:45 #uste:-55 #usto:-42 #utel:29 #utes:-20 #utte:24 #vale:-42
#vamo:51 #varl:41 #vega:-28 #vemo:78 #venc:19 #vere:58 #very:29 #vibr:-18 #vide:-19 #vien:23 #ving:-33 #wait:24
#wasn:-23 #week:-70 #well:43 #went:-23 #weso:26 #when:-106 #whic:-40 #whit:61 #wild:19 #will:65 #wing:24 #wist:57
#witc:-21 #wobb:23 #wont:-22 #work:-98 #worr:21 #wors:-69 #wron:-41 #xact:21 #xcel:23 #xpla:-28 #yeah:31 #ymor:-37
#ysel:-22 #ythi:20 %again_later:-107 %again_later%agree:45 %again_later%call_off:29 %again_later%car:36
%again_later%car_part:33 %again_later%doubt:22 %again_later%gone_car:24 %again_later%message:-52
%again_later%money:19 %again_later%staff:30 %again_later%start_again:-26 %again_later%thanks:25
%again_later%wrong_one:38 %agree:426 %agree%bad:-39 %agree%bring:246 %agree%busy:46 %agree%call_off:-107
%agree%car:28 %agree%doubt:118 %agree%elsewhere:80 %agree%fails:24 %agree%family:49 %agree%gone_car:98
%agree%how_long:160 %agree%lift:60 %agree%machine:19 %agree%meaning:24 %agree%message:-52 %agree%noise:34
%agree%odometer:26 %agree%on_way:126 %agree%opening:34 %agree%phone:48 %agree%question:112 %agree%refuse:-26
%agree%season:18 %agree%shift_it:58 %agree%smoke_smell:-41 %agree%staff:132 %agree%start_again:35 %agree%thanks:-50
%agree%wrong_one:69 %away:-87 %away%bring:35 %away%call_off:31 %away%doubt:-27 %away%leave_me:31 %away%noise:31
%away%on_way:81 %away%question:-19 %away%refuse:20 %away%wrong_one:27 %bad:-47 %bad%call_off:37 %bad%car_part:-47
%bad%doubt:-31 %bad%meaning:86 %bad%money:-27 %bad%on_way:-21 %bad%refuse:143 %bad%staff:-18 %bring%busy:50
%bring%call_off:44 %bring%car_part:19 %bring%family:34 %bring%gone_car:19 %bring%how_long:-19 %bring%leave_me:-57
%bring%meaning:19 %bring%money:32 %bring%phone:20 %bring%refuse:39 %bring%thanks:49 %bring%wrong_one:42 %busy:20
%busy%refuse:-35 %busy%thanks:21 %call_off:-98 %call_off%car:-23 %call_off%car_part:-20 %call_off%do_it:59
%call_off%doubt:25 %call_off%elsewhere:22 %call_off%fails:-64 %call_off%family:-31 %call_off%how_long:55
%call_off%leave_me:47 %call_off%lift:73 %call_off%money:-39 %call_off%odometer:-23 %call_off%on_way:70
%call_off%place:-20 %call_off%question:132 %call_off%refuse:101 %call_off%shake:-18 %call_off%shift_it:82
%call_off%staff:-20 %car:49 %car%car_part:39 %car%elsewhere:48 %car%fails:20 %car%gone_car:-58 %car%how_long:-19
%car%leave_me:20 %car%lift:23 %car%noise:23 %car%on_way:19 %car%question:18 %car%shake:-18 %car_part:-91
%car_part%do_it:18 %car_part%leak:19 %car_part%money:-31 %car_part%odometer:40 %car_part%on_way:32
%car_part%question:57 %car_part%shake:30 %do_it:-96 %do_it%gone_car:43 %do_it%how_long:-39 %do_it%leave_me:28
%do_it%message:19 %do_it%money:-31 %do_it%question:-50 %do_it%refuse:33 %do_it%season:-18 %do_it%shift_it:32
%do_it%staff:-24 %do_it%wrong_one:-33 %doubt:37 %doubt%gone_car:-30 %doubt%how_long:48 %doubt%lift:29
%doubt%message:-33 %doubt%on_way:26 %doubt%place:30 %doubt%question:-34 %doubt%refuse:-98 %doubt%season:-18
%doubt%staff:19 %doubt%wrong_one:-21 %elsewhere:-29 %elsewhere%fails:18 %elsewhere%place:24 %elsewhere%question:31
%elsewhere%refuse:27 %elsewhere%who:21 %fails%gone_car:21 %fails%place:26 %fails%refuse:-36 %fails%staff:20
%fails%thanks:18 %family:-26 %family%odometer:19 %family%on_way:-25 %family%shift_it:34 %gone_car:-110
%gone_car%meaning:18 %gone_car%money:42 %gone_car%question:61 %gone_car%refuse:36 %gone_car%season:-19
%gone_car%staff:-23 %gone_car%wrong_one:32 %how_long:-84 %how_long%lift:19 %how_long%money:41 %how_long%on_way:-66
%how_long%place:-51 %how_long%question:87 %how_long%refuse:-44 %how_long%shift_it:-31 %how_long%start_again:18
%how_long%thanks:-18 %leak:-24 %leave_me:-119 %leave_me%message:-18 %leave_me%money:26 %leave_me%on_way:20
%leave_me%refuse:34 %leave_me%smoke_smell:18 %lift:37 %machine:-47 %machine%refuse:-25 %meaning:18 %meaning%phone:-21
%meaning%question:-23 %meaning%refuse:84 %message:-60 %message%start_again:-71 %message%thanks:31
%message%wrong_one:-31 %money:-79 %money%place:-20 %money%question:-33 %money%shift_it:41 %money%smoke_smell:-52
%noise%refuse:21 %odometer:-19 %odometer%on_way:-29 %on_way:-92 %on_way%phone:-19 %on_way%place:-32
%on_way%question:67 %on_way%refuse:79 %on_way%shift_it:23 %on_way%smoke_smell:19 %on_way%thanks:64
%on_way%wrong_one:34 %opening:-46 %opening%question:32 %pay_day:-44 %pay_day%refuse:-26 %pay_day%season:-31
%phone:-133 %phone%refuse:-49 %place:-88 %place%question:30 %place%refuse:-19 %place%shift_it:20 %place%staff:19
%place%start_again:32 %question:-163 %question%refuse:159 %question%season:23 %question%start_again:53
%question%who:-53 %question%wrong_one:44 %refuse:-69 %refuse%shake:-25 %refuse%shift_it:47 %refuse%staff:-22
%refuse%wrong_one:50 %season:-65 %shake:-69 %shift_it:-178 %shift_it%start_again:-20 %smoke_smell:-86 %staff:-24
%staff%thanks:18 %staff%wrong_one:-60 %start_again%wrong_one:-22 %who:-91 %wrong_one:-92 @?:-22 @after_visit:253
@after_visit_cant_complain:39 @after_visit_not_really:-28 @car:378 @confirm:127 @confirm_still_good:22
@confirm_stop:-685 @confirm_stop_si:-52 @confirm_thumbsup:41 @day:-65 @later:-84 @nothing:-420 @odometer:-131
@offers:-673 @reading:-55 @time:-75 @times:-21 @walk_in:149 @walk_in_will_do:30 ^_$:80 ^_a:-78 ^_absolutely:29
^_aceptan:-20 ^_affirmative:23 ^_afirmativo:35 ^_ahi:156 ^_al:25 ^_all:53 ^_alright:29 ^_andale:20 ^_ando:-34
^_any:-34 ^_appreciate:-38 ^_apunteme:42 ^_are:-45 ^_as:-25 ^_ay:-19 ^_be:-94 ^_better:27 ^_blue:34 ^_call:-28
^_can:-39 ^_cancel:-34 ^_cant:59 ^_claro:114 ^_como:94 ^_confirmado:19 ^_confirmo:38 ^_correct:22 ^_correcto:20
^_could:-49 ^_count:58 ^_cual:-40 ^_cuando:-30 ^_cuanto:-108 ^_dale:101 ^_de:106 ^_definitely:39 ^_deme:-20 ^_dont:29
^_el:-50 ^_en:-68 ^_es:-26 ^_esta:72 ^_estoy:-37 ^_eta:-40 ^_everything:57 ^_fine:83 ^_fri:-21 ^_friday:-33 ^_go:73
^_going:-18 ^_got:-21 ^_half:-31 ^_have:-22 ^_hay:-46 ^_hm:-21 ^_hmm:-36 ^_how:-94 ^_hoy:-35 ^_id:88 ^_if:47
^_ill:-29 ^_is:-118 ^_kids:-18 ^_la:36 ^_le:-33 ^_let:-31 ^_lets:-25 ^_llego:-28 ^_lo:-22 ^_luego:-39 ^_mal:-24
^_manana:-54 ^_mas:-25 ^_me:70 ^_meh:-31 ^_mi:-19 ^_might:70 ^_monday:-31 ^_muy:19 ^_nada:20 ^_need:-34
^_neither:-122 ^_next:-22 ^_ninguno:-50 ^_none:-25 ^_nop:-40 ^_not:-119 ^_nothing:23 ^_ok:198 ^_on:-35 ^_one:-20
^_orale:27 ^_para:-55 ^_paso:-23 ^_perfect:22 ^_perfecto:42 ^_please:64 ^_por:103 ^_puedo:-25 ^_que:-127 ^_quedo:65
^_quiero:-38 ^_re:19 ^_reschedule:-29 ^_running:-29 ^_sale:156 ^_saturday:-27 ^_se:-72 ^_sedan:22 ^_see:92
^_seguro:22 ^_si:458 ^_sign:43 ^_simon:68 ^_sin:23 ^_sip:124 ^_something:-28 ^_sounds:42 ^_still:85 ^_stop:-78
^_sure:180 ^_tengo:-23 ^_thank:-106 ^_that:101 ^_the:25 ^_there:-19 ^_thumbsup:50 ^_thurs:-29 ^_thursday:-71
^_tienen:-19 ^_todo:146 ^_truck:26 ^_tuesday:-24 ^_va:88 ^_voy:-22 ^_what:-152 ^_when:-29 ^_where:-18 ^_which:-36
^_white:31 ^_who:-25 ^_why:53 ^_will:43 ^_wont:-34 ^_works:97 ^_would:-30 ^_wouldnt:41 ^_y:64 ^_ye:73 ^_yep:149
^_yes:234 ^_yo:-33 a:-54 a_$:30 a__hora:-21 a__late:-19 a__of:-25 a__one:-31 a__si:-38 a_como:-42 a_hacer:-20
a_las:18 a_little:-19 a_plan:23 a_poder:-30 a_ser:-20 absolutely:29 absolutely_$:26 add:31 adelante:23 adelante_$:28
affirmative:23 afirmativo:35 again_$:-24 agendeme:86 agua:-21 ahead:87 ahi:199 ahi_$:-80 ahi__caigo:30 ahi__vemos:45
ahi_estare:62 ahi_estoy:33 ahi_le:26 ahi_nos:44 ahi_voy:39 al:28 al_cien:33 alarma:21 algo:-19 all:21 all__for:47
all_good:66 alla:84 alla_$:27 almost:-20 already:-30 alright:-30 also:23 alta:-25 an:47 an_appointment:58 and:35
and__you:56 and_thank:44 and_what:21 andale:20 andale_pues:20 ando:-26 ando_bien:-37 another:-29 any__next:24
any_day:30 anymore:-37 anymore_$:-38 anything:-20 apenas:-26 appointment_$:31 appreciate:19 appreciate_it:-31
apunteme:67 arm:57 as:71 as_butter:18 as_well:47 asi:-55 asi_$:-30 asi__bien:-38 asking:-21 at:-19 at_$:-32 at_all:40
at_if:22 at_the:-39 atras:31 away:-24 away_$:-21 awesome:26 ayer:-23 azul:77 azul_$:25 back:-23 bad:85 bad_$:25
be:-59 be__at:-23 be__by:-38 be__in:-48 be_a:-27 be_late:-21 be_there:79 beat:-18 been__to:37 before_$:-22 bells:30
bells_on:22 bet:20 better:46 better_$:22 better_than:30 bien:-78 bien_$:-60 bien_el:-19 bien_lo:18 blanca:53
blanca__la:22 bless:-18 blue:62 blue_$:18 blue_one:18 book:96 book_it:31 book_me:68 both__them:26 both_of:26 bring:38
bring__in:26 bring_it:38 btw:52 bueno:29 but:-39 but__much:-56 but_how:-43 but_i:28 but_it:-38 but_the:-47 butter:24
by:30 caigo:34 caigo_$:30 call_me:-28 cambiar:-20 cambieme:-20 cambios:26 came:-34 came_up:-22 can:-73 can__come:-21
can__do:-48 can__make:69 can__me:-36 can_do:-21 can_i:18 can_text:-33 can_we:-43 cancel:-91 cancel_it:-90
cancel_my:24 cancel_the:-28 cancelen:26 cant__in:-30 cant__it:-67 cant_come:-43 cant_complain:41 cant_do:-40
cant_make:-48 cant_say:69 cant_wait:64 car:-73 car_$:-19 car_is:-31 caro:-72 caro_$:-28 carro_$:-23 cars:-27
center:-26 changed:26 changes:27 chevere:54 cien:32 cien_$:26 cita:-59 cita_$:-47 claro:115 claro_$:22 claro_el:18
come:-69 come_in:-30 coming_$:-19 coming__the:22 como:38 como_no:158 como_si:-20 complain:41 complain_$:39
complaints:48 con_el:34 con_ustedes:-29 conmigo:25 conmigo_$:37 correct:22 correcto:31 could:-19 couldnt:25 count:78
count__in:72 count_me:56 cual:-47 cual__el:-21 cualquier_dia:23 cuando:25 cuanto:-18 cuanto_$:-71 cuanto_cuesta:50
cuanto_sale:-44 cuanto_se:20 cuanto_va:-23 cuanto_vale:-19 cuente:33 cuesta:44 cuesta_$:33 dale:101 date:28 day_$:-33
day__week:23 de:28 de__dos:-43 de__otra:18 de__si:-20 de_atras:18 de_los:-38 de_mi:23 de_una:131 de_verdad:-20
definitely:45 dejaron:-26 dejo:-43 del:21 del_jueves:-18 desde:-84 desde_que:-41 dia:-28 dia_$:-35 dias:-53
dias_$:-22 did:-45 did__last:-37 did_that:-36 didnt:-44 diga:27 digo:-50 dios:32 do:125 do_$:142 do__do:-25
do__get:-18 do__instead:-25 do__know:-19 do__need:-29 do__work:-20 do_i:-43 do_it:95 do_you:-71 domingo:-19 done:53
done_$:29 done_last:-20 dont:74 dont__my:42 dont__you:-18 dont_need:-22 dont_see:38 dont_think:-19 dont_want:-22
door:-19 door_$:-18 down:81 down_$:120 down_on:-18 down_the:-25 drive:-46 drive_to:-39 drives:46 drives_like:43
earlier:-19 early_$:19 either:23 el_$:-22 el__a:66 el__antes:28 el__cuando:18 el__cuanto:28 el__despues:27
el__dia:-21 el__en:29 el__no:-32 el__para:19 el__pero:-19 el__por:-20 el__se:-21 el__si:-32 el__temprano:20
el__va:-18 el_azul:67 el_carro:19 el_de:23 el_lunes:41 el_martes:-20 el_miercoles:23 el_sedan:34 el_seguro:-22
el_trabajo:35 else:-29 empty:18 en_$:-34 en__dias:-24 en__tarde:33 en__trabajo:20 en_el:25 en_la:23 en_orden:31
en_pie:62 en_unos:-22 end:21 end_$:18 entro_$:19 es:-51 es__mismo:19 es_la:29 es_malo:-19 espero:-29 espero_$:-32
esta:-30 esta__caro:-36 esta_bien:31 estamos:-19 estan:-18 estare:72 estaria:-32 este:-24 estimate_$:18 estoy:-25
estoy_$:33 estoy_bien:-56 eta:-40 every:-28 everything:40 everything_was:33 explain:-25 falta:20 falta_$:28 far:32
favor_$:-43 fierro:28 fierro_$:28 find:-26 fine:-51 fine_$:-71 fine__me:37 fine_with:25 firme:24 fix:-23 fix_it:-30
fluid:-20 for__reminder:27 for_it:57 for_me:21 for_that:-29 for_thursday:49 for_tomorrow:26 forever:-30 forget:-27
forgot:-42 fri:-38 friday_$:-29 friday_afternoon:32 from:-24 front:29 fuera:-24 fui:-25 get:70 get__done:103
get_it:61 get_there:-21 gets:27 give:-23 go:101 go_ahead:93 go_for:40 going__be:-22 good:-59 good_$:-94 good_for:22
got:26 got_any:-33 got_it:39 got_to:23 gracias__todo:-33 gracias_por:-49 gratis:-18 great_$:19 great__you:-38
guess:61 gustaria:51 gusto:-37 guy:-19 hablo:-18 hablo_$:-18 hace__ruido:18 hacerlo:29 hacerlo_$:25 had:-50
had_to:-29 hago:-29 hago_$:-29 half:-22 happier:32 happy:32 has:49 have:-71 have__call:21 have__wrong:-24 have_a:-65
have_someone:18 have_the:-39 hay_problema:58 he:21 heads:-20 heads_up:-20 hecho:34 hecho_$:36 heck:28 hicieron:-19
history:21 hit:-24 hm:-21 hmm:-36 hora:-31 hora_$:-18 hour:-34 hours:-23 hours_$:-21 how:-52 how__is:-66
how__will:-23 how_do:-27 how_much:-18 hoy:-53 hoy_mismo:-21 humo:-51 humo_$:-35 i:39 i__an:50 i__come:-21 i__see:27
i__so:83 i__there:-27 i__you:-25 i_cant:-33 i_come:-34 i_do:57 i_forgot:-19 i_get:-43 i_go:-18 i_guess:56 i_have:-25
i_make:79 i_should:26 i_sold:-20 i_took:19 i_want:23 i_work:-18 i_would:19 id:99 id__to:61 id_like:37 id_rather:-18
idea:101 idea_$:90 if_i:29 igual:-26 ill:107 ill__by:22 ill__on:-19 ill__there:136 ill_be:90 ill_stop:22 ill_swing:24
im:-18 im_all:-22 im_coming:33 im_down:137 im_good:-117 im_in:56 im_not:-23 imposible:-18 in_$:120 in_law:19
instead:-49 instead_$:-40 interesa:67 interesa_$:37 interest:-25 interested:43 interested_$:46 ir_$:-34 is:-100
is__address:30 is__really:-19 is_a:35 is_been:-18 is_fine:-48 is_good:49 is_it:-48 is_my:-25 is_off:-27 is_ok:-26
is_right:30 is_that:-24 is_the:47 is_this:-31 is_up:-19 is_your:24 ish:36 ish_$:28 issues:48 it_$:35 it__and:-19
it__at:-34 it__day:19 it__is:-18 it__me:22 it__next:-18 it__on:21 it_a:30 it_anymore:-21 it_be:-40 it_done:30
it_is:89 it_to:-30 jaja:48 jaja_si:28 jala:34 jale:97 jale_$:100 jefe:23 jueves_$:19 just:-30 keep_me:26 kids:-26
know:-19 know_it:18 know_you:-28 la__del:19 la__no:-33 la__o:26 la__que:40 la_blanca:49 la_cita:-57 la_otra:41
la_troca:22 las_$:35 las_si:-32 last:-59 last_time:20 last_week:-48 late_$:58 later:-20 law:18 le:-76 le_digo:-22
le_sale:-54 left:-40 left_$:-19 lejos:-19 less:39 let:-28 let_me:-21 lets:-45 lets__it:34 lets__the:-22 lets_do:29
lets_get:41 lets_out:-24 lets_say:-32 like:28 like__plan:23 like_a:28 like_to:33 listo:-29 listo_$:-35 little:-19
live__the:22 llanta:-19 llego:-20 llego_en:-27 llevarlo:39 llevarlo_$:44 llevo:-21 lo:-58 lo__por:-22 lo_dejo:-44
lo_hago:-24 lo_que:22 lo_vendi:22 located_$:18 lol:37 long_will:-22 look:18 los:-73 los_dos:-28 los_ninos:-18
lost:-20 lot_$:22 love:36 low:-19 luego:-102 luego_$:-47 luego_les:-24 lunes:26 lunes_$:-33 lunes__las:19 lunes_a:32
lunes_temprano:19 made:-27 make_it:-67 mal:-59 mal_$:-39 malo:-20 manejando:-32 martes:-29 martes__le:-38
martes_pero:-36 mas:-56 maybe:-22 me:29 me_$:82 me__como:-39 me__de:-19 me__el:-57 me__la:-25 me__the:31 me__y:-26
me_again:-38 me_agarro:-21 me_gustaria:51 me_gusto:-44 me_in:85 me_interesa:73 me_late:138 me_off:-44 me_out:-22
me_parece:27 me_puedo:38 me_queda:-43 me_sale:-28 me_to:26 me_up:98 meh:-33 mejor:-36 mi_cita:-25 miercoles:29
miercoles_o:26 might:72 mil:-32 millas:-24 millas_$:-21 min:-120 min_$:-66 mind:26 minutes:-20 mismo_dia:-22 miss:73
miss_it:81 modo:44 monday__be:-25 money:-25 month:-25 more:-22 much:-23 much__it:-59 much_is:-54 muchas__por:-28
mucho_$:-18 muy:-48 muy_caro:-28 muy_mal:-19 my__one:-19 my__will:19 my_arm:57 my_end:29 myself:-22 need:-54
need_$:-22 need_to:-22 neither:-122 neither_$:-58 new:41 new_$:38 next:21 ni:-52 ni_modo:44 nice:-33 night:-41
night_$:-48 nine:34 nine_$:21 ninguno:-58 ninguno__los:-29 ninguno_de:-29 ninos:-18 no:-68 no_$:-39 no__a:-67
no__at:37 no__bien:-60 no__cancele:18 no__conmigo:-24 no__good:-22 no__gusto:-44 no__hago:-22 no__here:37
no__interesa:-53 no__is:-44 no__nada:-24 no__preocupe:32 no__problema:59 no__puedo:38 no__that:62 no_complaints:48
no_gracias:-26 no_hay:76 no_im:-29 no_issues:48 no_it:-32 no_lo:-18 no_me:-61 no_problem:60 no_puedo:-34 no_quedo:-35
no_quiero:-23 no_se:56 no_thanks:-20 no_that:-23 no_voy:-87 no_worries:40 none:-27 none__them:-23 none_of:-24
noon_$:24 nop:-40 nop_$:-40 nos:74 nos_vemos:85 not:-35 not_$:125 not__yet:-45 not_a:68 not_coming:-40
not_interested:-19 not_really:-33 not_sure:-94 nothing:20 now:-79 now_$:-56 nuevo:26 nuevo_$:19 number:-44
number_$:-23 o:31 of:-24 off:-94 off__for:19 off__now:-25 off__schedule:-24 off_the:-30 oh:-18 ok_$:-194
ok__drive:-39 ok__i:21 ok__it:22 ok__the:-40 ok_el:28 ok_friday:24 ok_to:-50 on:31 on_$:83 on__end:29 on__list:18
on__way:-32 on_it:26 on_my:21 onda:22 one:-41 one_$:-34 or:30 orale:27 orden:31 other:19 otra:26 otra_semana:25
out:-62 out_$:-71 over:-25 over_here:-22 own:-29 para:-35 para__me:24 para__si:-30 para_el:-19 para_un:-18 pasa:-56
pasa__no:-25 pasa_si:-55 paso:18 pass:-35 pass_$:-21 pay:28 pedal:-20 perdida:-21 perdon:-24 perfecto:27 pero:61
pero__no:21 pero__que:24 pero_cuanto:-57 pero_le:-35 pero_que:21 pero_ya:21 phone:-33 phone_$:-22 pie:61 pie_$:40
pierdo:22 place:-18 plan:34 plan_$:32 planning:50 please:-86 please_$:-171 please_and:45 please_do:82 please_dont:39
please_take:-28 pm_$:18 podemos:-21 poder:-31 por__no:136 por_el:-28 por_favor:-18 por_la:-22 por_mi:18
por_perdida:-20 por_que:86 por_supuesto:30 por_todo:-29 porque_no:18 preocupe:32 problem:45 problem_$:47 problema:46
puede:-45 puede_$:-31 puedo:34 pues:78 pues_$:43 pues_ya:19 puro:18 puse:21 put_me:30 que:26 que_$:-26 que__con:-27
que__el:30 que__me:25 que__si:-59 que_le:-33 que_no:130 que_pasa:-55 que_tan:-27 que_viene:22 queda:-99 queda_$:-43
quedo:26 quedo_$:-32 queja:20 quick:28 rather:-25 re:19 ready:79 ready_$:86 really:-38 really_$:-28 rear:20 reason:18
reminder:27 reschedule:-43 reschedule_please:-26 right:-95 right_$:-91 ring:-24 ring_me:-20 roll:20 run:19
running:-39 running_late:-21 sabado:22 sabado_a:18 sale:-51 sale_$:-37 sale__blanco:-20 sale__que:33 sale_humo:-52
salio:-18 same:-19 say:87 say__th:-24 say_no:86 say_the:-24 schedule:40 schedule_$:31 school:-27 school__out:-24
school_lets:-23 se:-126 se__llevo:-29 se__mas:24 se__va:-25 se_me:-24 se_preocupe:32 se_puede:-41 se_va:-30 sedan:84
see:235 see__then:68 see__tomorrow:28 see_you:201 ser:-32 ser_$:-23 set:47 set__up:46 set_for:26 set_it:41 shakes:-61
should:29 si:45 si_$:-29 si__bien:19 si__cuanto:-43 si__dejo:-37 si__favor:26 si__interesa:26 si__jueves:24
si__lo:-24 si__lunes:28 si__pero:22 si__puede:-28 si__que:34 si_cuanto:30 si_el:44 si_fuera:-22 si_gracias:34
si_hay:-33 si_lo:-61 si_manana:25 si_me:-19 si_no:-69 si_por:26 si_quiero:59 si_se:-33 si_si:-21 si_voy:70 si_y:56
si_ya:18 sign:91 sign__up:103 sign_me:95 sigue__pie:48 sigue_en:48 simon:70 sin:62 sin_falta:44 sip:124 sip_$:124
smooth:23 smooth__butter:18 smooth_as:18 so:70 so_$:59 so_i:20 so_yes:31 sold:-60 something__up:-20
something_came:-20 sometime:43 sorry:-48 sorry_$:-37 start:-31 steering:-22 steering__is:-26 steering_wheel:-28
still:43 still__the:-27 still_coming:27 still_good:19 still_on:64 stop:-88 stop_$:-133 stop_by:28 suena:24
suena_bien:19 supuesto:30 sure:101 sure__me:20 sure_thing:26 swing:21 swing_by:27 switch:-21 take:-41 take__off:-37
take_me:-42 talk:-23 tambien:40 tan:-29 tarda:18 tarde:-25 te:-44 te_digo:-20 text:-60 text__again:-42 text_me:-53
thank_you:50 thanks__the:19 that:41 that_$:45 that__be:69 that_done:45 that_is:26 that_last:-36 that_would:66 the:-20
the__at:-21 the__for:-18 the__go:22 the__now:-27 the__please:-22 the__the:20 the__thing:21 the__up:-20 the__what:18
the__wheel:-26 the_appointment:-34 the_blue:33 the_brakes:23 the_car:-45 the_front:26 the_heads:-20 the_reminder:27
the_same:-19 the_steering:-28 the_total:21 the_way:-20 the_white:25 the_wrong:-29 them:-57 them_$:-32 then:54
then_$:41 there:48 there_$:103 there_at:-23 there_by:-18 there_in:-45 these:-20 think:-24 think__is:31 think__it:-29
think_it:33 third:-23 this:-30 this_$:-23 this_friday:19 though:49 though_$:23 through:-24 thumbsup:50 thumbsup_$:50
thurs:38 thurs_$:22 thursday__is:18 thursday_at:50 thursday_morning:-22 thursday_what:19 thursdays:-18 time:-23
time_$:-39 to_$:-18 to__it:52 to__my:-28 to__that:46 to__the:26 to__to:-43 to__you:31 to_ask:22 to_be:-26 to_call:18
to_drive:-29 to_get:73 to_pay:23 to_that:60 to_the:24 toca:23 toca_$:18 today:-38 today_$:-34 todo:112 todo_$:-53
todo__orden:34 todo_bien:75 todo_en:32 tomorrow_$:24 tomorrow_at:27 too_$:20 total:27 trabajo:28 traded:-21
traffic:-21 trafico:-20 trafico_$:-18 troca:22 truck:57 truck_$:27 tues:-63 tuesday_$:-20 twist:47 two:-34 un:-70
una:81 uno:-31 uno_$:-23 unos:-26 unsubscribe:-19 up:-38 up_$:79 use:20 usted:-22 ustedes:-44 ustedes_$:-40 va:-65
va_$:-19 va__ser:-26 va_a:-46 va_en:-52 va_que:18 vale:-42 vamos:31 vamos_a:29 vegas:-28 vegas_$:-28 vemos:79
vemos_$:36 ver:-44 ver_si:-20 verdad:-21 very:24 vibrates:-21 viene:25 voy_$:85 voy__poder:-20 voy_saliendo:-19
wait:51 wait_$:63 waiting:-26 was:-56 wasnt:-23 way:-23 we:-39 we__be:31 we__it:-19 we_do:-32 we_sold:-23 we_will:20
wednesday:33 week:-33 week_$:-23 weekend:-22 weekend_$:-21 well:27 went:-23 what_$:-35 what__i:23 what__the:40
what__your:35 what_are:21 what_i:-19 what_is:53 wheel__off:-26 wheel_is:-30 when:-118 where__you:18 where_are:18
which:-47 white:61 white_$:18 white_one:21 who:-44 who__this:-20 who_is:-32 why:100 why_$:-45 why__i:-23 why__you:-21
why_do:-33 why_not:244 why_would:-26 will:52 will__be:-33 will__there:63 will_be:61 will_do:112 will_it:-41
will_you:-24 with_me:24 wobbles:27 wont:-22 wont__it:34 wont__there:-33 wont_be:-41 work:-42 work__it:19 work_for:19
work_on:-21 works:-54 works_$:-51 works_but:-51 worries:39 worse:-64 worse_$:-46 would:-33 would__be:-23
would__need:-25 would_be:36 would_i:-26 would_it:-18 wouldnt:39 wouldnt__it:38 wouldnt_miss:38 wrong:-41
wrong_number:-18 y_$:96 y__digo:-18 y__por:19 y__va:-19 y_cuanto:49 y_ni:-21 y_si:-24 ya:89 ya_$:78 ya__hace:21
ya__voy:-23 ya_esta:-19 ya_no:-20 ya_que:27 ya_voy:-41 ye:73 yeah:31 yeah_$:43 yeah_no:-47 yeah_ok:18 yep:161
yep__you:24 yes:423 yes_$:31 yes__do:20 yes__how:-28 yes__i:37 yes__it:-51 yes__me:33 yes__works:-44 yes__you:24
yes_and:48 yes_but:-24 yes_do:19 yes_friday:26 yes_how:18 yes_i:42 yes_maam:18 yes_monday:24 yes_please:58
yes_stop:-21 yet:-48 yet_$:-53 yo:-71 yo_no:-20 you:31 you_$:42 you__a:-18 you__at:38 you__it:92 you__me:-22
you__text:-33 you__the:-19 you_can:-21 you_got:37 you_then:74 you_think:31 you_tomorrow:35 you_work:-20 your:-21
your_address:19
"""
