"""What speaks for and against `accept`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "accept"
BIAS = -84
WEIGHTS = """\
#abla:-24 #ablo:-30 #ably:21 #abso:36 #acei:23 #acep:19 #acer:51 #acie:-22 #acio:-28 #addr:22 #adra:20 #affi:19
#afir:36 #agai:-29 #agam:24 #agar:-35 #agen:97 #agua:-21 #aguj:18 #ahea:87 #aigo:40 #aint:52 #aiti:-46 #ajaj:-24
#akes:-98 #alar:23 #alca:-24 #algo:-32 #alla:79 #ally:-22 #almo:-29 #alre:-41 #alri:119 #also:36 #amen:21 #anca:35
#ance:-82 #anda:22 #ando:-47 #anej:-38 #ange:63 #anni:71 #anot:-23 #anto:-25 #anym:-41 #anyt:-29 #anzo:-23 #apar:23
#apen:-23 #appe:-33 #appi:26 #appy:34 #apri:-18 #apun:158 #arag:-25 #arca:-21 #arda:22 #arde:-22 #aren:-18 #arli:-21
#arlo:81 #arma:26 #aron:-95 #arqu:-23 #arra:-21 #arro:-21 #asis:-27 #atch:-39 #ates:-30 #athe:-32 #atio:-20 #ativ:34
#atra:-23 #atte:-23 #augh:20 #avin:-22 #avis:-39 #away:-25 #awes:31 #aybe:-20 #ayer:-20 #azul:56 #back:-27 #baja:-24
#bano:-19 #bble:36 #bear:38 #been:24 #bell:27 #bett:53 #biem:-23 #bien:-77 #blan:28 #blem:119 #blue:60 #body:-34
#book:76 #both:21 #bran:31 #brar:-23 #brat:-24 #brin:51 #brok:-31 #bscr:-21 #bsol:36 #bsup:61 #butt:23 #bvio:82
#caig:32 #camb:-40 #came:-45 #canc:-56 #cant:35 #canz:-23 #caro:-95 #carr:-19 #casi:-19 #ceit:23 #cele:52 #cell:23
#cerl:39 #chan:27 #chas:-22 #chec:-20 #ches:-18 #chev:61 #choo:-28 #cita:-55 #cito:33 #ckup:25 #clar:97 #cole:35
#colo:22 #come:-88 #como:20 #comp:55 #conf:44 #conm:25 #cool:23 #coun:68 #cove:20 #crat:-39 #crib:-47 #ctio:-27
#cuad:20 #cual:-38 #cuan:19 #cuen:46 #cuer:18 #cues:49 #cuid:22 #culp:-24 #cupa:-39 #cupe:24 #dale:119 #dame:70
#days:-77 #ddre:22 #deal:-46 #defi:53 #deja:-25 #deje:-18 #dejo:-64 #dele:212 #deme:69 #demo:-61 #ders:-22 #desd:-75
#dias:-55 #dida:-24 #didn:-47 #diga:48 #digo:-52 #dine:-22 #ding:-30 #dios:38 #disc:-44 #done:60 #dont:78 #doub:158
#down:65 #eads:-28 #eady:58 #eage:-28 #eall:-31 #eals:-45 #ease:-87 #eate:-25 #ebod:-19 #ecci:18 #ecir:27 #ecto:49
#edan:82 #eden:-20 #edes:-49 #eeke:-19 #eeks:-20 #eeri:-36 #efin:53 #egas:-35 #egat:-24 #egre:-23 #egun:-30 #egur:-32
#eite:23 #eith:-116 #ejan:-24 #ejor:-25 #ejos:-23 #eken:-19 #elen:44 #ells:22 #else:-41 #elta:-18 #emel:-23 #emin:19
#emor:-39 #emos:42 #emov:-19 #enas:-27 #enda:44 #ende:93 #endo:-54 #enme:-40 #enos:-25 #ensa:-23 #ente:68 #ento:33
#ents:-19 #eocu:31 #eque:44 #erab:21 #erco:36 #erdi:-42 #eres:77 #erin:-37 #erlo:37 #eron:-64 #erro:42 #erta:18
#eryt:45 #esch:-41 #escr:-26 #esde:-75 #esom:31 #espa:-20 #espe:-19 #essa:-23 #essi:26 #esta:32 #este:22 #ethi:-20
#etim:49 #ette:58 #evar:46 #ever:34 #exce:25 #expl:-41 #exto:19 #fall:29 #falt:46 #fect:26 #feel:-24 #ffir:39
#fier:32 #filt:-22 #find:-34 #fine:-68 #fini:44 #firm:114 #firs:-20 #flui:-20 #flus:19 #fore:-43 #forg:-83 #frid:26
#from:-34 #fron:27 #gain:-29 #gale:152 #gara:-19 #gati:-24 #gend:133 #gets:22 #gist:32 #give:-28 #good:-57 #grat:-25
#gres:-22 #gual:-32 #gues:71 #guja:18 #guna:24 #guno:-53 #gunt:-35 #guro:-31 #habl:-51 #hace:30 #haci:-22 #haga:173
#hago:-43 #hake:-72 #hang:48 #hank:-24 #happ:39 #have:-93 #head:52 #heel:26 #here:52 #hese:-27 #heve:61 #hich:-33
#hici:-20 #high:21 #hile:21 #hine:19 #hing:45 #hink:-26 #hite:52 #hone:-40 #hool:-28 #hori:-25 #hors:24 #houg:33
#hour:-77 #hous:-18 #hree:-21 #hrou:-19 #humb:18 #humo:-66 #ibir:-18 #ible:-33 #ibra:-22 #icie:-27 #icku:25 #idea:138
#ider:22 #idnt:-47 #ieme:-22 #iend:-62 #ierc:33 #iero:-73 #ierr:37 #iert:18 #igua:-32 #iler:-23 #imag:-28 #imon:75
#impo:-33 #inde:34 #iner:-26 #info:-24 #ingu:-40 #init:54 #inos:-21 #inst:-54 #inte:58 #ints:45 #inut:-37 #invo:-22
#irma:73 #irme:19 #irst:-20 #isar:-18 #iscu:-28 #isit:-31 #ismo:-25 #isnt:-20 #issu:47 #iste:20 #isti:-26 #itch:-18
#itel:53 #ithe:-116 #itin:-46 #ittl:-24 #ives:53 #jaja:19 #jala:33 #jale:112 #jalo:46 #jand:-35 #jaro:-31 #jefe:20
#just:-35 #kend:-19 #kids:-23 #know:-19 #lada:26 #lain:48 #lanc:33 #lann:65 #lant:-24 #larm:24 #laro:104 #last:-76
#late:-26 #lcan:-24 #ldnt:81 #leas:-97 #left:-43 #lego:-24 #lejo:-18 #leno:-21 #lent:19 #lers:-19 #lets:-47 #leva:63
#levo:-41 #lico:-24 #lied:-24 #lien:-24 #lier:-21 #like:44 #line:-22 #litt:-24 #lleg:-33 #llen:-19 #llev:21 #lmos:-28
#loca:36 #lock:-26 #lost:-30 #love:22 #lrea:-41 #lrig:119 #lueg:-93 #luid:-20 #lune:18 #lush:19 #lute:36 #maam:20
#made:-28 #mage:-29 #make:-18 #malo:-29 #mane:-39 #mara:25 #marc:-23 #marq:-18 #mart:-35 #mati:58 #mayb:-20 #mber:-41
#mbsu:61 #mebo:-19 #mejo:-23 #mela:-35 #mero:-19 #mess:-20 #meth:-20 #meti:45 #mier:33 #migh:78 #migo:21 #mill:-42
#mind:43 #minu:-37 #mism:-21 #miss:101 #modo:41 #mone:-29 #mont:-22 #moot:49 #more:-66 #most:-30 #move:-27 #mpla:91
#mpos:-20 #mpre:-33 #much:-49 #myse:-23 #ncel:-55 #ndal:22 #ndam:76 #nday:-21 #ndem:79 #nder:30 #need:-38 #neit:-136
#neja:-36 #nero:-27 #nged:29 #nger:-21 #nges:34 #ngun:-40 #nice:-45 #nigh:-60 #nine:35 #nite:54 #nmig:25 #nnin:26
#none:-29 #noon:25 #nsid:26 #nste:-50 #nsub:-18 #ntem:67 #nten:66 #ntre:-25 #ntro:27 #ntua:22 #numb:-50 #nunc:-20
#nute:-19 #nuto:-18 #nvoi:-21 #nymo:-41 #nyth:-25 #obbl:37 #oble:108 #obvi:82 #oday:-37 #odem:-22 #oder:-37 #odos:-22
#odre:-18 #oger:18 #oice:-22 #oken:-20 #oles:27 #olor:25 #olut:36 #omeb:-19 #omet:25 #ompl:86 #once:20 #oney:-34
#onmi:25 #onsi:22 #onte:24 #onth:-22 #ooki:-28 #ooth:49 #oral:25 #orde:24 #orev:-38 #orge:-34 #orgo:-47 #orit:-37
#orks:-50 #orre:25 #orry:-42 #orse:-56 #osib:-23 #otal:21 #othi:36 #otra:29 #ough:31 #ould:30 #ound:-28 #ount:67
#ours:49 #paci:-18 #paga:-22 #para:-40 #pasa:-48 #pase:-25 #paso:20 #pass:-36 #pena:-38 #pens:-23 #perd:-66 #pere:-18
#pero:22 #phon:-27 #pick:31 #pier:34 #plai:48 #plan:100 #plea:-90 #pode:-59 #podr:-23 #pone:-22 #port:-18 #posi:-23
#ppen:-21 #preg:-35 #preo:30 #pret:-18 #pric:38 #prin:-24 #prob:122 #pued:-29 #pues:106 #punt:185 #puro:-19 #puse:30
#quea:25 #qued:-88 #quej:60 #quem:-27 #rade:-29 #raff:-20 #rage:-28 #rail:-23 #rale:24 #ramo:22 #raro:-22 #rasa:-26
#rase:-28 #ratc:-39 #rate:-32 #rath:-31 #rati:-20 #rcol:34 #rdan:20 #rden:24 #rdid:-32 #rdon:-27 #read:51 #real:-38
#reas:26 #reat:-25 #rect:27 #reet:22 #rega:-37 #regr:-23 #regu:-38 #remo:-22 #rent:-27 #reoc:30 #resa:61 #resc:-41
#reve:-31 #rget:-34 #rgot:-47 #ribe:-21 #rice:35 #ries:31 #rise:19 #rita:-32 #rlie:-21 #rmat:59 #road:-21 #robl:112
#roke:-31 #roll:23 #rong:-35 #ront:22 #room:22 #rran:-20 #rrec:35 #rrie:18 #rsda:-19 #rtes:-32 #ruck:45 #runn:-44
#ryth:45 #sado:-19 #sage:-18 #sale:-47 #sali:-22 #scho:-28 #scra:-54 #scri:-48 #scul:-23 #seda:88 #sela:-21 #self:-30
#semo:-18 #send:-23 #shak:-76 #shin:18 #sibl:-30 #side:40 #sign:90 #simo:50 #sist:-30 #slow:-19 #smok:28 #smoo:49
#sobr:-27 #sold:-73 #solu:36 #some:34 #sorr:-41 #soun:-29 #sper:-35 #spon:-23 #ssag:-19 #ssed:-18 #ssue:47 #stam:-28
#stan:-20 #star:29 #stea:-55 #stee:-31 #stil:43 #stir:-29 #stop:-93 #stre:33 #subs:-21 #suen:34 #suit:-20 #supp:26
#supu:35 #sure:84 #swap:-18 #swin:18 #tain:25 #take:-45 #talk:-36 #tamb:41 #tamo:-29 #tare:75 #tart:-37 #tati:-19
#tead:-50 #tede:-48 #teer:-36 #tell:-23 #tely:92 #teme:93 #tend:-20 #tent:34 #tera:-20 #tere:90 #text:-71 #than:-22
#that:32 #them:-52 #then:84 #ther:-87 #thes:-27 #thou:28 #thre:-26 #till:43 #time:30 #ting:-59 #tion:-43 #tivo:23
#toca:20 #toda:-53 #todo:86 #took:-28 #tota:21 #trad:-27 #traf:-37 #trai:-29 #tras:-25 #trea:-20 #tree:20 #tren:-21
#truc:46 #tter:67 #tues:-81 #twis:45 #uadr:20 #uand:37 #uant:-42 #uart:-20 #ubsc:-21 #ueda:-104 #uede:-73 #uedo:48
#uego:-93 #ueja:48 #uelt:-19 #uena:53 #uent:46 #uerd:18 #uess:71 #uest:76 #ueva:-18 #uevo:27 #uide:19 #uien:-38
#uits:-18 #uldn:81 #ulls:-18 #ulpe:-23 #umbe:-50 #umbs:18 #unca:-20 #unes:18 #unni:-44 #unos:-26 #unsu:-18 #unta:-20
#unte:59 #unto:97 #uper:27 #upue:35 #ursd:-19 #urse:84 #usta:48 #uste:-53 #usto:-51 #utel:36 #utes:-20 #utte:24
#vale:-42 #vamo:28 #varl:48 #veci:19 #vega:-35 #vemo:79 #verd:-18 #vere:62 #very:30 #vibr:-28 #vide:-22 #vien:25
#ving:-34 #visi:-31 #voic:-22 #vuel:-29 #wait:18 #wasn:-27 #wate:19 #week:-68 #well:32 #went:-27 #weso:31 #what:18
#whee:26 #when:-121 #whic:-33 #whil:21 #whit:52 #wild:26 #will:54 #wing:21 #wipe:22 #wist:45 #wobb:37 #wont:-19
#work:-102 #worr:26 #wors:-85 #wron:-35 #xcel:31 #xpla:-34 #xtos:19 #yeah:36 #ymor:-41 #ysel:-23 #ythi:20
%again_later:-129 %again_later%agree:40 %again_later%call_off:34 %again_later%car:28 %again_later%car_part:18
%again_later%doubt:21 %again_later%gone_car:36 %again_later%lift:-20 %again_later%machine:19 %again_later%message:-45
%again_later%money:23 %again_later%on_way:23 %again_later%question:30 %again_later%refuse:18
%again_later%start_again:-44 %again_later%wrong_one:48 %agree:364 %agree%away:19 %agree%bad:-38 %agree%bring:287
%agree%busy:49 %agree%call_off:-126 %agree%car:36 %agree%do_it:26 %agree%doubt:111 %agree%elsewhere:81
%agree%family:53 %agree%gone_car:109 %agree%how_long:174 %agree%lift:47 %agree%machine:22 %agree%message:-59
%agree%money:-19 %agree%noise:44 %agree%odometer:21 %agree%on_way:141 %agree%opening:45 %agree%pay_day:-18
%agree%phone:54 %agree%question:105 %agree%refuse:-29 %agree%season:22 %agree%shift_it:59 %agree%smoke_smell:-57
%agree%staff:116 %agree%start_again:41 %agree%thanks:-55 %agree%wrong_one:74 %away:-97 %away%bring:26
%away%call_off:52 %away%car:21 %away%doubt:-28 %away%family:-20 %away%leave_me:41 %away%noise:29 %away%on_way:90
%away%smoke_smell:18 %away%wrong_one:28 %bad:-62 %bad%busy:-25 %bad%call_off:21 %bad%car_part:-38 %bad%doubt:-22
%bad%fails:-19 %bad%meaning:111 %bad%money:-28 %bad%noise:19 %bad%on_way:-24 %bad%question:-19 %bad%refuse:153
%bad%staff:-19 %bring:-28 %bring%busy:47 %bring%call_off:57 %bring%car_part:33 %bring%how_long:-18
%bring%leave_me:-40 %bring%money:20 %bring%on_way:-19 %bring%refuse:62 %bring%thanks:48 %bring%wrong_one:40 %busy:30
%busy%call_off:-35 %busy%do_it:19 %busy%refuse:-38 %busy%thanks:23 %call_off:-97 %call_off%car:-19
%call_off%car_part:-27 %call_off%do_it:72 %call_off%doubt:35 %call_off%elsewhere:35 %call_off%fails:-60
%call_off%family:-21 %call_off%how_long:86 %call_off%leave_me:46 %call_off%lift:95 %call_off%money:-81
%call_off%noise:-26 %call_off%odometer:-20 %call_off%on_way:49 %call_off%phone:-22 %call_off%place:-27
%call_off%question:145 %call_off%refuse:108 %call_off%season:18 %call_off%shake:-30 %call_off%shift_it:108
%call_off%thanks:-29 %car:61 %car%car_part:27 %car%elsewhere:34 %car%gone_car:-64 %car%how_long:-25 %car%lift:24
%car%noise:24 %car%on_way:29 %car%phone:-18 %car%wrong_one:25 %car_part:-111 %car_part%do_it:27 %car_part%doubt:20
%car_part%how_long:18 %car_part%noise:28 %car_part%odometer:39 %car_part%on_way:54 %car_part%place:24
%car_part%question:104 %car_part%shake:41 %do_it:-121 %do_it%elsewhere:-25 %do_it%gone_car:64 %do_it%how_long:-37
%do_it%leave_me:31 %do_it%money:-44 %do_it%pay_day:-18 %do_it%question:-40 %do_it%refuse:42 %do_it%season:-23
%do_it%shift_it:18 %do_it%staff:-25 %do_it%wrong_one:-26 %doubt:42 %doubt%gone_car:-40 %doubt%how_long:54
%doubt%leave_me:29 %doubt%lift:37 %doubt%message:-34 %doubt%odometer:-19 %doubt%on_way:34 %doubt%place:47
%doubt%question:-27 %doubt%refuse:-122 %doubt%wrong_one:-30 %elsewhere:-32 %elsewhere%message:-18 %elsewhere%money:33
%elsewhere%question:36 %elsewhere%refuse:22 %elsewhere%wrong_one:21 %fails%gone_car:32 %fails%money:21
%fails%on_way:-28 %fails%place:44 %fails%refuse:-30 %fails%staff:23 %fails%start_again:-18 %fails%thanks:18
%family%money:-20 %family%odometer:24 %family%on_way:-26 %family%question:26 %family%shift_it:39 %gone_car:-105
%gone_car%money:44 %gone_car%question:75 %gone_car%refuse:38 %gone_car%season:-20 %gone_car%shift_it:23
%gone_car%staff:-19 %gone_car%start_again:21 %gone_car%wrong_one:32 %how_long:-102 %how_long%meaning:19
%how_long%money:49 %how_long%on_way:-74 %how_long%place:-55 %how_long%question:91 %how_long%refuse:-42
%how_long%shift_it:-19 %how_long%thanks:-19 %leak:-31 %leave_me:-116 %leave_me%message:-21 %leave_me%money:23
%leave_me%on_way:32 %leave_me%refuse:55 %leave_me%smoke_smell:23 %lift:39 %lift%opening:-34 %lift%question:-30
%lift%shift_it:20 %machine:-36 %meaning%phone:-18 %meaning%question:-32 %meaning%refuse:106 %meaning%wrong_one:-23
%message:-64 %message%question:21 %message%start_again:-73 %message%thanks:40 %message%wrong_one:-29 %money:-81
%money%opening:19 %money%pay_day:-20 %money%question:-23 %money%shift_it:42 %money%smoke_smell:-67 %money%thanks:-19
%noise:23 %odometer:-22 %odometer%on_way:-25 %odometer%refuse:-19 %on_way:-74 %on_way%phone:-24 %on_way%question:74
%on_way%refuse:75 %on_way%shift_it:45 %on_way%smoke_smell:24 %on_way%thanks:55 %on_way%wrong_one:26 %opening:-45
%opening%question:41 %pay_day:-44 %pay_day%question:-29 %pay_day%refuse:-33 %pay_day%season:-24 %phone:-132
%phone%refuse:-60 %place:-71 %place%question:51 %place%refuse:-19 %place%staff:22 %place%start_again:40
%question:-164 %question%refuse:177 %question%season:37 %question%shift_it:21 %question%start_again:47
%question%who:-64 %question%wrong_one:63 %refuse:-80 %refuse%shake:-24 %refuse%shift_it:74 %refuse%staff:-51
%refuse%start_again:26 %refuse%wrong_one:37 %season:-71 %shake:-74 %shift_it:-172 %shift_it%start_again:-29
%smoke_smell:-94 %staff:-45 %staff%wrong_one:-62 %start_again:-37 %start_again%wrong_one:-22 %thanks:-20 %who:-96
%wrong_one:-85 @?:-41 @after_visit:198 @after_visit_cant_complain:31 @car:400 @confirm:117 @confirm_stop:-594
@confirm_thumbsup:34 @day:-35 @later:-117 @nothing:-475 @odometer:-123 @offers:-727 @reading:-35 @time:-66 @times:-38
@walk_in:157 @walk_in_will_do:23 ^_$:63 ^_a:-92 ^_absolutely:36 ^_affirmative:24 ^_ahi:170 ^_all:61 ^_already:-23
^_alright:36 ^_am:-22 ^_ando:-48 ^_any:-35 ^_appreciate:-49 ^_are:-45 ^_as:-44 ^_be:-109 ^_been:-18 ^_better:35
^_blue:35 ^_both:30 ^_call:-31 ^_can:-25 ^_cancel:-31 ^_cant:75 ^_changed:-20 ^_claro:96 ^_como:128 ^_con:19
^_confirmo:29 ^_could:-50 ^_count:87 ^_cual:-32 ^_cuando:-36 ^_cuanto:-92 ^_dale:102 ^_de:119 ^_definitely:46
^_dont:25 ^_el:-69 ^_en:-74 ^_es:-45 ^_esta:65 ^_estoy:-28 ^_eta:-40 ^_everything:68 ^_fine:91 ^_fri:-24 ^_friday:-44
^_go:82 ^_going:-18 ^_good:-23 ^_got:-22 ^_half:-39 ^_have:-21 ^_hay:-58 ^_hm:-29 ^_hmm:-46 ^_how:-84 ^_hoy:-36
^_id:109 ^_if:62 ^_ill:-42 ^_info:-18 ^_is:-116 ^_it:-24 ^_kids:-18 ^_la:21 ^_le:-51 ^_let:-31 ^_lets:-29 ^_llego:-27
^_lo:-20 ^_luego:-39 ^_manana:-65 ^_mas:-19 ^_me:106 ^_might:79 ^_monday:-34 ^_need:-36 ^_neither:-136 ^_next:-18
^_ninguno:-47 ^_no:22 ^_none:-25 ^_nop:-34 ^_nos:20 ^_not:-126 ^_nothing:35 ^_oh:-20 ^_ok:197 ^_olvide:-18 ^_on:-48
^_one:-29 ^_orale:25 ^_para:-48 ^_paso:-25 ^_perfecto:46 ^_please:85 ^_por:100 ^_puedo:-23 ^_que:-129 ^_quedo:61
^_quiero:-42 ^_rain:20 ^_reschedule:-32 ^_running:-28 ^_sale:172 ^_saturday:-28 ^_scratch:-21 ^_se:-67 ^_sedan:32
^_see:104 ^_si:443 ^_sign:52 ^_simon:51 ^_something:-30 ^_sounds:50 ^_still:84 ^_stop:-91 ^_sure:188 ^_thank:-135
^_that:103 ^_the:29 ^_there:-28 ^_thumbsup:61 ^_thurs:-38 ^_thursday:-91 ^_tiene:-18 ^_tienen:-24 ^_todo:142
^_tomorrow:-24 ^_tuesday:-24 ^_va:67 ^_voy:-23 ^_what:-145 ^_when:-31 ^_whenever:-21 ^_where:-25 ^_which:-28
^_white:25 ^_why:46 ^_will:42 ^_wont:-32 ^_works:110 ^_would:-50 ^_wouldnt:49 ^_y:68 ^_ya:23 ^_ye:93 ^_yep:153
^_yes:228 ^_yo:-26 ^_you:-51 a:-27 a_$:35 a__a:27 a__day:-19 a__hora:-47 a__late:-22 a__of:-28 a__one:-39 a__pero:18
a__que:-23 a__si:-43 a_como:-47 a_hacer:-18 a_little:-22 a_poder:-36 a_que:-30 absolutely:36 aceite:24 add:34
address:22 affirmative:24 again:-29 again_$:-27 agarro_el:-22 agendeme:84 agua:-25 agua_$:-22 aguja:18 ahead:87
ahi:201 ahi_$:-77 ahi__vemos:44 ahi_estare:61 ahi_le:37 ahi_nos:42 ahora:23 ahorita:-25 al:49 al_cien:39 alarma:29
alcanzo:-23 algo:-21 all:40 all__for:53 all_good:83 alla:41 almost:-28 already:-41 also:36 alta:-32 am:24 am_i:28
an:61 an__change:20 an_appointment:74 an_oil:20 and:25 and__you:75 and_what:22 ando:-21 ando_en:20 another:-26
antes:22 any:-18 any__but:21 any__next:29 any_day:49 anymore:-41 anymore_$:-39 anything:-25 apenas:-23
appointment_$:50 appreciate_it:-37 apunteme:89 are:-24 arm:45 as:54 as_butter:24 as_well:55 asi:-49 asi_$:-34
asi_que:23 at:-40 at_$:-48 at__you:24 at_all:33 at_if:31 at_noon:23 at_the:-39 at_work:-18 atras:22 away:-25
awesome:31 ayer:-19 azul:49 azul_$:31 back:-25 back_$:-21 back__the:21 back_by:20 bad:108 bad_$:23 be:-68 be__at:-29
be__by:-42 be__in:-58 be__the:20 be_a:-27 be_late:-26 be_there:94 been:24 been__to:48 before_$:-18 better:53
better_$:24 bien:-113 bien_$:-60 bien_el:-28 bien_gracias:19 blanca:41 bless:-23 blue:60 blue_$:25 blue_one:27
book:112 book_it:38 book_me:70 booking:-23 both:24 both__them:31 both_of:31 bring:37 bring__in:20 bring_it:36
broken:-20 btw:61 bueno:28 but:-65 but__much:-66 but__need:24 but_how:-50 but_i:37 but_it:-53 but_no:-18 but_the:-51
butter:24 by_$:-36 caigo:32 caigo_$:21 call_me:-40 cambia:-18 cambiar:-21 came:-34 came_up:-24 camioneta_blanca:20
can:-52 can__do:-58 can__make:89 can__me:-36 can_i:41 can_text:-36 can_we:-44 cancel:-100 cancel_it:-114 cancel_my:34
cancel_the:-34 cancelen:34 cant:29 cant__in:-41 cant__it:-71 cant_come:-54 cant_complain:33 cant_do:-41 cant_make:-46
cant_wait:80 car:-76 car_$:-19 car_is:-36 caro:-87 caro_$:-35 carro_$:-22 cars_$:-18 casi:-19 center:-30
change_my:-18 changed:29 changed__mind:-21 changed_my:-23 changes:35 check_$:-18 cheque:18 cien:37 cien_$:29 cita:-51
cita_$:-40 claro:99 claro_$:31 claro__si:-18 come:-83 come_$:-20 come_friday:-21 come_in:-39 coming_$:-27
coming__the:21 como:25 como_no:193 como_si:-19 complain:33 complain_$:31 complaints:49 con_el:31 con_los:-21
con_ustedes:-36 conmigo:25 conmigo_$:32 contento:21 couldnt_be:-20 count:92 count_me:74 cual:-46 cual_es:-20
cuando:37 cuanto_$:-106 cuanto_cuesta:58 cuanto_sale:-39 cuanto_se:20 cuanto_tarda:18 cuanto_va:-18 cuesta:49
cuesta_$:36 cuesta__cuanto:22 cuesta_y:22 cuide:19 dale:102 day_$:-34 day__week:27 de:38 de__dos:-48 de__es:-19
de__si:-32 de_alta:-20 de_la:-18 de_los:-38 de_que:-28 de_una:142 decir:21 definitely:53 dejaron:-27 dejo:-64 del:27
deme:-19 desde:-75 desde_que:-43 dia_$:-38 dias:-55 did:-64 did_that:-45 didnt:-47 diga:34 digo:-52 dinero:-19
dios:38 do:123 do_$:177 do__do:-21 do__get:-24 do__guys:-22 do__know:-20 do__need:-43 do__work:-18 do_friday:-23
do_i:-59 do_it:93 do_you:-77 done:61 done_$:20 done_last:-23 dont:78 dont__my:44 dont__you:-32 dont_have:22
dont_know:-30 dont_need:-20 dont_see:41 dont_think:-28 dont_want:-30 down:109 down_$:185 down_the:-22 drive:-50
drive_to:-51 drives:55 drives_like:51 earlier:-21 either:20 el__a:55 el__antes:32 el__cuanto:27 el__despues:29
el__dia:-23 el__no:-36 el__pero:-22 el__se:-23 el__si:-37 el__temprano:27 el__va:-20 el__y:-22 el_azul:47 el_de:23
el_dia:18 el_dinero:-18 el_lunes:34 el_martes:-19 el_miercoles:31 el_sedan:20 el_trabajo:31 else:-29 else_$:-24
en:-40 en_$:-34 en__lista:22 en__tarde:40 en_el:38 en_la:36 en_pie:40 end:28 end_$:19 entro:30 entro_$:34 es:-90
es_eso:21 es_la:27 espero:-37 espero_$:-41 esta__caro:-46 esta_bien:40 estamos:-28 estan_$:-18 estar:22 estare:76
estaria:-43 este:-26 estoy_bien:-47 eta:-40 every:-24 everything:45 everything_$:-22 everything_was:36 excelente:19
explain:-30 falta:42 falta_$:41 far:50 favor_$:-49 fierro:38 find:-33 fine:-68 fine_$:-92 fine__me:36 fine_with:31
first:-20 first_thing:-23 fix:-33 fix_it:-38 fluid:-19 flush:19 for__reminder:34 for_it:34 for_me:33 for_that:-33
for_thursday:70 for_tomorrow:35 forever:-38 forget:-34 forget_it:-20 forgot:-47 fri:-41 friday_$:-39
friday_afternoon:41 from:-34 front:27 fue:-19 fuera:-19 fui:-35 garage:-25 get:80 get__done:113 get_it:67
get_there:-26 gets:22 give:-25 go:85 go__the:-19 go_ahead:94 go_for:32 going__be:-20 gone_$:-19 good:-57 good_$:-105
good__you:18 good_for:37 got:26 got_any:-42 got_it:59 got_to:19 gracias__todo:-38 gracias_por:-51 gratis:-22
great_$:26 great__you:-47 guess:71 gustaria:55 gusto:-43 guy:-22 hablo:-30 hablo_$:-22 hace__ruido:23 hacerlo:39
hacerlo_$:32 haciendo:-22 had:-51 had_to:-32 hago:-43 hago_$:-29 happy:35 has:71 hasta__hora:21 have:-92
have__wrong:-30 have_a:-75 have_the:-33 hay_problema:59 hay_que:18 he:31 heads:-26 heads_up:-26 heck:24 hicieron:-20
high:18 hit:-21 hm:-29 hmm:-46 hora:-30 hora_abren:23 hour:-43 hours:-34 hours_$:-38 how:-46 how__is:-65 how__was:-19
how__will:-26 how_do:-33 how_i:-18 how_much:-22 hoy:-51 hoy_mismo:-25 humo:-66 i:19 i__an:65 i__be:-30 i__come:-27
i__it:-40 i__my:-29 i__never:-19 i__see:27 i__so:87 i__that:-18 i__there:-29 i__you:-24 i_cant:-36 i_come:-28
i_could:18 i_do:59 i_dont:-18 i_forgot:-27 i_get:-46 i_go:-24 i_guess:65 i_have:-36 i_need:-23 i_should:26 i_sold:-19
i_want:20 i_work:-21 id:128 id__to:61 id_like:44 id_rather:-24 idea:131 if:35 if_i:32 if_it:19 if_you:20 igual:-30
igual_$:-24 ill:114 ill__by:25 ill__there:166 ill_be:112 ill_stop:33 im:-35 im_all:-27 im_good:-144 im_in:59
im_not:-26 imposible:-20 in_$:129 info:-19 instead:-50 instead_$:-46 interesa:62 interesa_$:34 interest:-24
interested:50 interested_$:54 invoice:-21 ir:-28 ir_$:-44 is:-72 is__address:42 is__ok:-19 is_a:20 is_at:20
is_been:-24 is_fine:-62 is_fixed:23 is_good:64 is_it:-60 is_my:-24 is_off:-32 is_ok:-24 is_right:23 is_that:-44
is_the:64 is_this:-30 is_your:33 ish:45 ish_$:34 isnt:-20 it:19 it__and:-30 it__at:-38 it__it:20 it__me:21
it__next:-20 it__not:-23 it__on:25 it__time:21 it_a:40 it_anymore:-24 it_back:19 it_be:-36 it_done:33 it_is:73
it_on:19 it_to:-24 it_tomorrow:-22 jaja:65 jajaja:-21 jala:32 jale:112 jale_$:117 jefe:20 jueves__la:19 jueves_en:18
just:-29 just__it:-19 keep:20 key:19 kids:-23 know:-30 know_you:-38 la__de:-23 la__del:18 la__esta:-19 la__lo:18
la__no:-21 la__que:45 la_aguja:18 la_blanca:34 la_cita:-54 la_lista:20 la_otra:40 la_semana:20 las_si:-41 last:-75
last_time:24 last_week:-65 late_$:70 later:-24 le:-60 le_caigo:23 le_digo:-25 le_sale:-68 left:-43 lejos:-18 les:-60
let:-25 let__know:20 let_me:-23 lets:-47 lets__it:34 lets__the:-31 lets_do:30 lets_get:40 lets_out:-24 like:23
like_a:35 like_to:35 lista:20 listo:-40 little:-24 live:19 live__the:30 live_in:20 llego:-23 llego_en:-25 lleva:18
llevarlo:46 llevarlo_$:51 llevo:-41 lo:-62 lo__por:-29 lo_dejo:-54 lo_hago:-29 lo_llevo:-38 lo_que:25 lo_vendi:28
located_$:21 lol:28 long_$:18 long__i:22 long_will:-25 los:-64 los_dos:-27 los_ninos:-20 lost:-30 lot:18 lot_$:29
love:21 luego:-93 luego_$:-43 lugar:-26 lunes:18 lunes_$:-30 lunes__las:18 lunes_a:31 maam:20 made:-28 make_it:-82
mal:-67 mal_$:-44 malo:-29 manana_$:40 manejando:-41 martes:-33 martes__las:20 martes_a:20 martes_en:19
martes_pero:-52 mas:-26 maybe:-20 me_$:108 me__bien:-18 me__como:-43 me__el:-64 me__la:-30 me__muy:-20 me__que:-21
me__the:22 me__y:-20 me_again:-48 me_cobran:18 me_da:-19 me_es:-19 me_gustaria:55 me_in:101 me_interesa:71 me_la:-34
me_off:-50 me_parece:30 me_queda:-42 me_sale:-27 me_to:30 me_up:105 mean:-20 mean_$:-21 meh:-43 mejor:-23 mero:-22
mi_cita:-19 miercoles:35 miercoles_$:18 might:78 mil:-36 mil_$:-18 millas:-25 millas_$:-19 min:-130 min_$:-77 mind:24
minutes:-20 mismo:-24 mismo_dia:-24 miss:92 miss_it:102 modo:50 monday_$:-34 monday__be:-31 money:-26 money_$:-20
month:-20 more:-25 morning_$:-19 much:-30 much__it:-63 much_is:-59 muchas:-18 muchas__por:-30 muchas_gracias:-18
muy:-65 muy_bien:-19 muy_caro:-35 muy_mal:-19 my:-19 my__dont:-18 my__will:24 my_arm:45 my_car:-19 my_mind:-21
myself:-23 need:-55 need_$:-26 need__appointment:-19 need_a:30 need_to:-28 neither:-136 never:-28 new:57 new_$:45
next_week:28 ni:-50 ni_modo:50 nice:-42 night:-48 night_$:-57 nine:35 nine_$:28 ninguno:-53 ninguno__los:-40
ninguno_de:-40 ninos:-21 ninos_$:-20 no:-73 no_$:-72 no__a:-80 no__at:32 no__bien:-64 no__conmigo:-22 no__good:-23
no__hago:-29 no__here:36 no__interesa:-69 no__ir:-21 no__is:-47 no__nada:-24 no__preocupe:32 no__problema:61
no__puedo:42 no__que:-26 no__si:26 no__to:22 no_complaints:49 no_gracias:-26 no_hay:79 no_im:-28 no_it:-33 no_jala:20
no_le:20 no_lo:-22 no_me:-85 no_podre:-18 no_puedo:-37 no_quedo:-34 no_se:59 no_thanks:-25 no_that:-28 no_voy:-93
no_worries:43 none:-26 none__them:-24 none_of:-25 noon:27 noon_$:35 nop:-34 nop_$:-34 nos:67 nos_vemos:83 not:-38
not_$:159 not__to:-19 not__yet:-58 not_a:91 not_coming:-41 not_interested:-27 not_really:-29 not_sure:-116 nothing:36
now:-64 now_$:-57 nuevo:22 number:-50 number_$:-27 nunca:-20 o__en:18 of__week:30 of_you:-25 off:-109 off__now:-29
off__schedule:-31 off_the:-36 oh:-24 oil_change:20 ok_$:-224 ok__drive:-50 ok__i:32 ok__it:30 ok__me:25 ok_friday:29
ok_is:23 ok_thanks:18 ok_to:-57 ok_yes:20 olvide:-18 on:40 on_$:86 on__way:-32 on_it:33 on_the:19 once:18 onda:21
one:-31 or:40 orale:25 orden:24 other:31 otra:30 otra_semana:18 out:-73 out_$:-78 para:-28 para__de:20 para__me:31
para__no:-23 para_alla:-20 pasa:-58 pasa_si:-64 paso:20 pass:-33 pay:36 perdida:-29 perdon:-27 perfect:-21
perfecto:37 pero:59 pero__es:18 pero__que:37 pero_cuanto:-72 pero_le:-51 pero_que:23 pero_ya:25 phone:-35 phone_$:-25
pickup:25 pie:38 pierde:-18 pierdo:31 plan:37 plan_$:44 please:-101 please_$:-203 please__me:-23 please_and:61
please_call:-21 please_do:89 please_dont:51 please_stop:-18 please_take:-36 pm:21 pm_$:27 podemos:-22 poder:-37
podre:-18 pongame:19 por:18 por__no:157 por_la:-19 por_perdida:-27 por_que:95 por_todo:-32 preocupe:32 problem:55
problem_$:59 problema:45 puede:-47 puede_$:-34 pueden:-20 puedo:44 pues:65 pues_$:46 pulls:-18 puse:30 put:24
put__in:22 put_me:38 que:29 que_$:-38 que__abren:22 que__con:-37 que__el:41 que__eso:18 que__lo:25 que__que:19
que__si:-70 que_hora:-19 que_no:139 que_pasa:-64 que_tan:-22 que_viene:25 queda:-90 queda_$:-42 quedo_$:-41 queja:18
quick:20 quien:-23 rain:20 rather:-31 ready:100 ready_$:105 really:-31 really_$:-24 rear:18 reason:22 reminder:34
remove:-18 reschedule:-41 reschedule_please:-28 right:-127 right_$:-129 ring:-23 ring_me:-20 road:-20 roll:22
rough:21 running:-40 running_late:-21 sale:-45 sale_$:-38 sale_humo:-69 saturday:18 say:120 say__th:-35 say_no:102
say_the:-35 schedule:35 schedule_$:32 school:-28 school__out:-24 school_lets:-24 scratch:-22 se:-102 se__llevo:-22
se__va:-21 se_lo:-23 se_me:-25 se_preocupe:32 se_puede:-44 se_va:-28 sedan:83 sedan_$:20 see:280 see__then:78
see_you:235 seguro:-31 semana__viene:23 semana_que:19 ser:-23 set:32 set__up:44 set_it:37 shakes:-84 si:68
si__cuanto:-64 si__dejo:-52 si__en:22 si__favor:35 si__interesa:26 si__jueves:25 si__lunes:29 si__martes:-18
si__me:-18 si__pero:21 si__puede:-32 si__que:40 si_cuanto:33 si_el:48 si_gracias:37 si_hay:-35 si_lo:-85 si_manana:21
si_me:-25 si_no:-68 si_pero:-30 si_por:35 si_quiero:60 si_se:-31 si_si:-23 si_voy:77 si_y:68 sign:100 sign__up:111
sign_me:101 sigue__pie:40 sigue_en:40 simon:53 sin:59 slow:-19 smooth:21 smooth__butter:24 smooth_as:24 so:105
so_$:55 so_i:25 so_yes:28 sold:-73 somebody:-19 something:-20 something__up:-22 something_came:-22 sometime:50
sorry:-41 sorry_$:-37 start:-28 steering:-36 steering__is:-30 steering_wheel:-30 still:43 still__the:-31
still_coming:37 still_on:68 stop:-80 stop_$:-148 stop_by:40 street:22 suena:34 suena_bien:26 suits:-18 sure:89
sure_$:25 sure__me:26 sure_how:18 sure_thing:19 swing:18 swing_by:23 take:-42 take__off:-42 take_me:-48 talk:-25
tambien:41 tan:-25 tarda:21 tarda_$:18 tarde:-18 te:-52 te_digo:-22 tell:-20 temprano:18 temprano_$:19 text:-56
text__again:-42 text_me:-51 textos:19 textos_$:21 thank:-23 thank_you:65 thanks__the:24 that:31 that_$:58 that__be:66
that_done:44 that_is:36 that_last:-50 that_was:-24 that_would:65 the__at:-26 the__for:-21 the__going:23 the__need:-20
the__now:-26 the__number:-18 the__one:19 the__please:-27 the__the:18 the__thing:35 the__up:-26 the__wheel:-30
the_address:18 the_appointment:-54 the_blue:30 the_car:-48 the_front:21 the_heads:-26 the_other:30 the_phone:-20
the_rear:19 the_reminder:34 the_road:-19 the_sedan:19 the_steering:-32 the_th:-23 the_tire:20 the_total:28
the_truck:19 the_way:-18 the_white:27 the_wrong:-33 them:-52 them_$:-35 then:84 then_$:65 there:66 there_$:114
there_at:-29 there_by:-20 there_in:-57 these:-27 think:-29 think__is:40 think__it:-34 think_it:43 this_$:-29
this_friday:25 though:37 though_$:28 three:-21 through:-19 thumbsup:61 thumbsup_$:61 thurs:36 thurs_$:26
thursday_at:71 thursday_morning:-24 thursdays:-19 time_$:-46 time__you:19 tire:22 to_$:-22 to__a:21 to__it:71
to__my:-29 to__on:-19 to__that:53 to__the:31 to__to:-53 to__you:46 to_ask:24 to_call:26 to_change:-20 to_come:-21
to_drive:-35 to_get:87 to_pay:27 to_take:18 to_that:82 to_the:31 toca:20 today:-34 today_$:-35 todo:102 todo_$:-52
todo_bien:70 todo_en:26 tomorrow:18 tomorrow_$:25 tomorrow_at:19 too_$:19 took:-28 total:36 trabajo:23 traffic:-20
tren:-21 tren_$:-21 truck:44 truck_$:36 tues:-82 tues_$:-19 tuesday_$:-19 two:-36 un:-73 una:72 una_hora:-18 under:20
uno:-33 unos:-26 unsubscribe:-18 up:-30 up_$:92 use:30 ustedes:-48 ustedes_$:-43 va:-57 va_$:-20 va__ser:-19 va_a:-21
va_en:-58 va_que:20 vale:-42 vamos:28 vegas:-35 vegas_$:-35 vemos:80 vemos_$:35 ver:-43 vez:-25 vibrates:-30 viene:31
voy_$:82 voy__alla:-19 voy__poder:-25 voy_para:-19 voy_saliendo:-20 wait:64 wait_$:80 waiting:-46 was:-66
was_fixed:-22 wasnt:-27 water:19 we:-40 we_are:21 we_do:-34 wednesday:30 wednesdays:-18 week:-29 week_$:-26
weekend:-19 weeks:-20 well:32 well_$:34 went:-27 what_$:-38 what__i:30 what__the:61 what__your:34 what_am:20
what_are:23 what_is:43 what_you:-18 wheel:20 wheel_is:-33 when:-135 where__you:20 where_are:20 which:-38 white:52
white_one:26 who:-44 who__this:-19 who_is:-23 why:102 why_$:-46 why__i:-30 why__you:-23 why_do:-38 why_is:-19
why_not:263 why_would:-35 will:42 will__be:-30 will__there:64 will_be:61 will_do:120 will_it:-41 will_you:-25
with__i:-19 with_me:34 wobbles:40 wont:-19 wont__it:44 wont__there:-41 wont_be:-47 work:-52 work_on:-18 works:-50
works_$:-53 worries:43 worse:-80 would:-47 would__need:-34 would_be:38 would_i:-31 wouldnt:65 wrong:-35
wrong_number:-21 y:40 y_$:111 y__digo:-18 y__por:27 y__va:-23 y_cuanto:70 y_si:-24 ya:104 ya_$:93 ya__hace:27
ya__la:20 ya__llego:-22 ya__vendi:21 ya__voy:-23 ya_casi:-21 ya_esta:-19 ya_lo:20 ya_no:-23 ya_que:29 ya_voy:-41
ye:93 yeah:36 yeah_$:40 yeah_no:-61 yeah_ok:25 yep:169 yep_$:18 yep__you:21 yes:439 yes_$:45 yes__am:21 yes__how:-34
yes__i:37 yes__is:22 yes__it:-73 yes__me:27 yes__works:-47 yes__you:23 yes_and:46 yes_but:-33 yes_do:20 yes_friday:28
yes_how:21 yes_i:42 yes_maam:21 yes_monday:33 yes_please:76 yet:-60 yet_$:-71 yo:-53 yo_no:-24 you_$:42 you__a:-20
you__do:-20 you__it:111 you__me:-40 you__text:-36 you_can:-40 you_do:-20 you_got:47 you_then:86 you_think:42
you_tomorrow:45 you_work:-18 your_address:24
"""
