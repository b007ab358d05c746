"""What speaks for and against `where`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "where"
BIAS = -187
WEIGHTS = """\
#abad:55 #abaj:69 #aber:50 #abie:38 #abla:-61 #able:58 #abou:-27 #abre:199 #acar:-56 #acia:31 #acin:-26 #acro:-94
#adas:41 #addr:66 #aden:-26 #adio:-42 #ados:-42 #adra:-28 #adre:97 #aero:25 #afor:40 #afue:56 #agar:110 #agen:-33
#ahor:-28 #ains:-25 #ajan:201 #ajar:-56 #aldo:-149 #ales:135 #algo:-61 #algu:29 #alle:144 #also:-33 #alto:34 #alwa:37
#amal:-41 #amar:40 #amin:-32 #anch:28 #anco:32 #anda:82 #ande:42 #andm:116 #ando:-38 #anic:-32 #anto:40 #anyo:33
#apid:-32 #arad:-36 #ards:-29 #area:27 #arer:65 #ares:28 #arga:-45 #argi:-38 #aril:56 #arki:-36 #arli:-67 #arly:81
#arma:74 #aron:71 #arqu:72 #arra:-29 #arro:87 #arse:-26 #asad:37 #asam:31 #aski:-27 #asol:32 #asse:-27 #aste:67
#atan:-60 #atch:-78 #ater:29 #atie:61 #atra:102 #atur:32 #ause:-36 #auto:33 #avan:38 #avor:53 #ayin:-29 #bado:55
#baja:106 #bajo:-66 #bank:43 #biad:-28 #bian:-38 #biar:69 #bica:87 #bier:65 #blan:-38 #blem:-25 #blue:59 #body:59
#bomb:-27 #brak:-49 #brar:-28 #bren:233 #brid:39 #buil:51 #busc:-29 #caci:47 #caer:88 #call:48 #camb:-38 #cami:-32
#canc:-40 #cant:51 #carg:-45 #caro:-48 #cate:38 #caus:-36 #ccio:79 #cele:-41 #celu:-41 #cerr:57 #char:-54 #chat:-46
#chec:-38 #chev:-33 #chur:-35 #cial:-39 #cias:31 #cibe:50 #cier:41 #cing:-32 #cion:87 #cito:-27 #cked:-28 #clas:67
#clos:85 #code:89 #coff:-45 #como:-40 #cond:46 #conf:31 #cont:-88 #cool:-25 #corn:-25 #cort:63 #cosa:-49 #cost:34
#coun:37 #cour:36 #cree:-25 #crib:-32 #cros:-53 #ctri:-35 #cuad:-28 #cual:173 #cuan:-30 #cuen:48 #cuer:29 #culp:-66
#dado:-52 #dame:78 #dand:55 #date:-43 #days:37 #dded:53 #ddre:66 #deci:-31 #dejo:-66 #deme:25 #dena:-25 #dent:-25
#depe:31 #dere:30 #deri:40 #desd:95 #dias:80 #dice:-34 #dido:63 #diga:56 #dine:-29 #ding:33 #dire:106 #disc:-66
#doin:-43 #domi:41 #dond:98 #donu:44 #door:41 #down:-45 #dran:-39 #dras:-28 #dres:225 #dria:-30 #drop:91 #drov:30
#dude:-64 #dura:-25 #each:36 #eage:-38 #eans:42 #eare:94 #ears:56 #ease:46 #east:83 #eate:-31 #eblo:45 #ebod:67
#ecci:72 #echa:64 #ecib:39 #ecit:-49 #ecti:25 #ectr:-35 #edan:95 #edde:53 #eden:-30 #edes:39 #edia:-40 #eeke:-28
#eewa:44 #egad:60 #egue:28 #ejar:-47 #ekda:-41 #eken:-28 #elec:-35 #elul:-41 #emaf:40 #emai:-28 #emel:26 #emin:42
#empi:42 #empr:36 #enas:40 #ench:-58 #enco:-28 #encu:57 #ende:71 #endo:38 #endr:-39 #ends:51 #ener:-27 #enev:26
#enge:-27 #engo:-35 #enid:38 #enme:41 #enos:-51 #enta:-44 #ente:144 #ento:-56 #entr:112 #ents:-40 #eocu:-26 #epen:31
#epla:-44 #erda:106 #erdi:43 #erdo:46 #erec:30 #eria:83 #ermi:-46 #erra:143 #erro:-27 #erso:31 #erst:49 #erti:-39
#erto:93 #esad:-57 #esas:-38 #escr:-30 #esda:-39 #esde:95 #esen:-29 #esia:-42 #esos:-49 #espo:-31 #esta:46 #este:-103
#esto:-34 #etra:29 #even:125 #eves:-53 #eway:74 #exit:92 #favo:53 #feed:32 #feri:60 #ffee:-45 #fica:-25 #fici:49
#fila:-33 #file:-32 #filt:-45 #fina:-42 #find:42 #firs:-40 #flui:-40 #foco:-33 #forg:41 #foro:40 #frid:-46 #fron:38
#fuer:40 #gado:60 #garr:110 #gaso:32 #gast:-100 #gend:-33 #gent:25 #ging:-40 #gles:-42 #goes:-35 #grac:30 #grea:50
#grua:-31 #guen:91 #guie:-30 #guys:91 #habl:-26 #hace:-103 #hago:-33 #hall:-35 #harg:-52 #hari:51 #harm:61 #hast:116
#have:-105 #hene:26 #here:118 #hese:-75 #heve:-33 #hice:68 #hich:108 #hift:48 #hile:63 #hill:46 #hiri:-61 #holi:36
#hood:-48 #hops:40 #hora:131 #hori:-27 #horr:31 #hosp:33 #hout:-27 #hred:53 #hree:-26 #huec:-29 #huma:-38 #hurc:-35
#hurs:-25 #iado:27 #iant:51 #iaro:79 #ibra:-27 #icac:54 #icen:-25 #iche:-33 #icie:-29 #icio:47 #icos:-35 #iden:-25
#ides:-30 #idge:46 #iend:99 #ient:-110 #iera:-30 #ierd:74 #ierr:68 #iert:68 #iest:-29 #ieza:33 #ific:31 #ight:33
#igle:-42 #igue:121 #igui:-30 #ilad:53 #ildi:51 #illi:-30 #illo:56 #iltr:-31 #imes:25 #imit:-40 #inal:-35 #indl:61
#infl:60 #info:-48 #inos:-32 #inte:73 #inut:-47 #ioni:39 #iqui:-42 #irec:107 #ires:-48 #irin:-62 #irme:32 #irmo:-28
#irst:-40 #iscu:-66 #isma:49 #ista:39 #iste:27 #itho:-27 #itio:39 #itos:-37 #ivew:38 #izqu:38 #jand:-40 #jarl:-29
#jaro:-38 #juev:-53 #just:-41 #kday:-41 #keep:49 #kend:-28 #keys:-34 #king:-101 #know:-33 #labl:37 #lace:87 #laci:-26
#lada:74 #lado:-82 #lake:59 #lanc:25 #land:108 #lass:67 #late:93 #lava:33 #ldin:51 #leas:62 #lect:-35 #left:61
#lego:-69 #legu:31 #lema:-61 #leme:36 #leno:27 #lers:-32 #lesi:-42 #leva:28 #lgun:29 #libr:-45 #lida:47 #lier:-38
#lies:-29 #like:-31 #limi:-40 #line:29 #ling:-31 #lion:-25 #liqu:-42 #list:-34 #lleg:-53 #lley:79 #llio:-25 #loca:221
#lock:-44 #losi:76 #lost:59 #lowe:-30 #ltas:42 #ltim:43 #ltro:-31 #luga:52 #luid:-40 #lula:-41 #lunc:63 #lway:37
#mafo:40 #main:80 #male:-46 #mand:140 #mano:41 #many:-135 #marc:-26 #mari:56 #mark:132 #marq:36 #mbie:25 #mble:56
#mean:47 #mebo:67 #menm:49 #meno:-26 #ment:-57 #meto:30 #mien:-74 #mile:41 #mind:58 #mine:-28 #mino:-56 #minu:-47
#mism:73 #mome:-27 #moto:-167 #move:97 #mpie:42 #much:-61 #muda:28 #ncel:-40 #nces:-29 #ncho:-30 #ncio:-25 #ncon:-27
#ncue:57 #ndab:-27 #ndam:84 #ndar:-49 #nday:39 #ndem:44 #ndio:-33 #ndit:29 #ndly:61 #ndma:116 #ndra:-39 #near:31
#need:-47 #nera:35 #nfir:40 #nfla:60 #ngan:-27 #nger:-25 #nida:38 #ning:47 #nino:-31 #nish:-25 #nloc:-45 #noch:57
#noon:44 #nort:125 #noyi:-28 #ntar:-30 #ntas:31 #nter:72 #nton:-30 #ntre:-57 #ntro:89 #nuev:44 #nyon:33 #oble:-61
#ocal:161 #ocat:75 #oche:57 #oday:36 #offe:-56 #oing:-63 #olid:36 #olin:32 #omeb:67 #omen:-27 #omet:-25 #once:-75
#onda:-44 #onde:83 #ondi:34 #onfi:34 #onga:-41 #only:-72 #ontr:-82 #onut:44 #oors:-77 #opis:36 #oppe:-61 #orar:31
#orci:51 #orge:43 #orit:-30 #orne:-25 #orqu:-58 #orri:33 #orry:-48 #orte:52 #orth:71 #orti:28 #orto:49 #osin:76
#ospi:33 #osto:26 #otor:-41 #otos:-166 #ound:30 #ount:35 #oure:45 #ours:47 #ourt:63 #outs:71 #oved:-27 #over:31
#ower:58 #oyin:-28 #padr:-47 #pare:27 #park:-53 #paro:64 #pasa:49 #past:75 #pega:60 #pend:31 #peni:-86 #pens:-35
#perd:57 #pick:25 #pide:-32 #pier:35 #piez:33 #pila:56 #pist:36 #pita:33 #plac:61 #play:-37 #plea:46 #plis:28
#pole:25 #pong:-35 #popp:-49 #porq:-57 #port:73 #pped:-46 #prim:-34 #prob:-40 #prop:49 #pueb:44 #pued:-33 #puen:59
#puer:41 #pull:42 #quar:34 #qued:-61 #quem:25 #quer:34 #quic:-25 #quid:-42 #quot:-25 #raci:31 #radi:-44 #raig:27
#rail:29 #rake:-50 #ranc:88 #rand:-31 #rapi:-31 #rari:32 #raro:101 #rasa:79 #rata:-60 #rate:-27 #rato:-28 #rcio:51
#rdad:37 #rdec:-27 #rdes:40 #rdid:61 #reac:41 #reat:37 #recc:64 #rech:72 #reco:39 #rect:44 #redd:53 #reet:67 #reew:44
#remi:42 #reno:-37 #repl:-55 #rese:-35 #ress:203 #rest:25 #retr:29 #rgen:-26 #rger:-64 #rget:43 #rgin:-38 #ribe:-39
#ribl:39 #rice:41 #rici:-58 #rico:-35 #rida:-48 #ridg:46 #rill:53 #rima:-41 #ring:-42 #rita:-33 #rive:33 #rkin:-44
#rlie:-67 #rmac:74 #rmen:56 #rmin:-47 #rner:-25 #road:-54 #robl:-61 #rojo:-52 #roll:37 #rong:-47 #ront:39 #roof:36
#ross:-53 #roto:-52 #roun:62 #rove:30 #rrad:-31 #rran:81 #rrar:86 #rrib:43 #rson:31 #rsta:49 #rtil:-32 #rtin:60
#rtos:72 #rued:37 #ruid:27 #rumb:85 #rush:-35 #saba:55 #saca:-43 #sada:-46 #sado:74 #said:-32 #sala:-41 #sale:98
#same:92 #sand:30 #sant:43 #sarm:-30 #satu:25 #says:-31 #scri:-32 #scul:-66 #sday:-39 #send:93 #seng:-27 #sent:-79
#seri:-36 #shal:-35 #shif:48 #shop:86 #show:101 #shre:53 #shut:66 #side:114 #sien:41 #sier:-37 #sigu:93 #sing:78
#sist:27 #skin:-27 #slot:-26 #sold:-50 #soli:32 #solo:-31 #some:25 #sorr:-38 #spar:34 #spec:-33 #spit:33 #spok:29
#spon:-28 #spot:56 #ssen:-27 #stad:-80 #stan:79 #star:-33 #stat:36 #sten:-27 #ster:63 #stil:40 #stre:71 #stuc:-29
#stuf:-30 #sual:-26 #suen:-41 #sund:38 #swap:-28 #taci:-34 #tada:-37 #tado:-62 #tain:-65 #take:-25 #tama:-41 #tamb:32
#tand:-61 #tard:-26 #tari:-36 #tars:-26 #tate:50 #tcha:-25 #tede:39 #teng:-37 #tere:25 #term:-47 #then:-73 #thes:-75
#they:-54 #this:-46 #thre:-26 #tien:42 #till:101 #tima:34 #time:55 #tina:64 #tint:-29 #tion:61 #tire:-29 #tito:-28
#todo:-29 #tonc:-30 #took:-35 #topi:36 #tort:-32 #towe:104 #town:62 #tran:89 #tras:45 #trat:-60 #tree:72 #tric:-35
#trip:-27 #ttle:-32 #tuck:-29 #tues:-41 #tuff:-30 #turd:25 #turn:-105 #uadr:-28 #uand:-26 #ubic:81 #udar:27 #uebl:46
#ueco:-29 #ueda:-42 #ueme:27 #uena:-56 #uent:106 #uera:37 #uerd:29 #ueri:34 #uert:38 #uesd:-38 #ueve:-64 #uevo:27
#ugar:52 #uick:-25 #uien:-75 #uier:50 #uild:51 #ulpe:-66 #ulti:43 #uman:-38 #umba:-31 #umbo:101 #unch:63 #unde:-30
#unlo:-45 #unos:-46 #unte:-33 #unto:26 #unty:90 #uote:-25 #uran:-25 #urch:-35 #urda:25 #urge:-26 #urns:-42 #urth:63
#used:-33 #usua:-26 #utop:36 #vand:42 #veni:121 #vent:-36 #verd:35 #veri:-36 #vert:-39 #vewa:38 #visi:-39 #wait:-40
#wash:37 #wate:66 #weat:-31 #were:43 #what:46 #wher:125 #whic:112 #whil:63 #wifi:-35 #will:-33 #with:-32 #wron:-47
#yeah:54 #year:41 #ying:-57 #yone:33 #your:117 #zqui:38 #zumb:-31 %again_later:25 %again_later%agree:-90
%again_later%away:48 %again_later%bad:-43 %again_later%bring:55 %again_later%busy:-49 %again_later%car_part:41
%again_later%doubt:42 %again_later%elsewhere:-35 %again_later%how_long:61 %again_later%pay_day:-29
%again_later%phone:-35 %again_later%place:158 %again_later%refuse:56 %again_later%season:-43
%again_later%shift_it:-62 %again_later%thanks:57 %again_later%who:49 %agree%away:-37 %agree%bring:-63
%agree%call_off:-100 %agree%car_part:38 %agree%do_it:-43 %agree%elsewhere:36 %agree%family:58 %agree%gone_car:-30
%agree%lift:-26 %agree%message:-36 %agree%noise:31 %agree%odometer:25 %agree%opening:164 %agree%place:64
%agree%question:-42 %agree%shift_it:43 %agree%staff:65 %away:48 %away%car_part:31 %away%do_it:68 %away%elsewhere:140
%away%question:106 %away%refuse:-39 %away%season:-28 %away%shift_it:-32 %away%staff:-37 %away%who:-35
%away%wrong_one:-46 %bad:-60 %bad%bring:-44 %bad%place:-25 %bring%busy:-25 %bring%call_off:66 %bring%car:-52
%bring%car_part:85 %bring%do_it:70 %bring%elsewhere:47 %bring%gone_car:38 %bring%leak:56 %bring%leave_me:-32
%bring%lift:-41 %bring%money:-33 %bring%noise:-26 %bring%refuse:-50 %bring%staff:-51 %bring%thanks:-45
%bring%wrong_one:-55 %busy%call_off:39 %busy%elsewhere:-39 %busy%on_way:-33 %busy%opening:105 %busy%place:-80
%busy%question:-97 %busy%refuse:-33 %call_off:47 %call_off%car_part:72 %call_off%elsewhere:-45 %call_off%fails:-28
%call_off%family:41 %call_off%gone_car:34 %call_off%leave_me:-70 %call_off%money:-54 %call_off%on_way:-31
%call_off%opening:-36 %call_off%phone:-53 %call_off%place:-34 %call_off%refuse:-37 %call_off%season:62
%call_off%staff:37 %call_off%who:-29 %car:-67 %car%elsewhere:-30 %car%how_long:41 %car%message:36 %car%on_way:-49
%car%opening:-42 %car%thanks:34 %car_part%doubt:26 %car_part%elsewhere:-57 %car_part%fails:-99 %car_part%how_long:61
%car_part%leak:-34 %car_part%money:116 %car_part%noise:-67 %car_part%odometer:-34 %car_part%on_way:28
%car_part%opening:67 %car_part%place:75 %car_part%question:-144 %car_part%refuse:-42 %car_part%season:-37
%car_part%shift_it:77 %car_part%thanks:-45 %do_it%elsewhere:-51 %do_it%leak:36 %do_it%money:27 %do_it%place:-83
%do_it%refuse:25 %do_it%shift_it:47 %do_it%staff:-68 %do_it%who:45 %do_it%wrong_one:-41 %doubt%how_long:30
%doubt%opening:38 %doubt%refuse:63 %doubt%staff:45 %doubt%wrong_one:37 %elsewhere:89 %elsewhere%family:31
%elsewhere%gone_car:-32 %elsewhere%how_long:-48 %elsewhere%leak:-31 %elsewhere%meaning:51 %elsewhere%odometer:-35
%elsewhere%on_way:45 %elsewhere%phone:-33 %elsewhere%question:-108 %elsewhere%season:-40 %elsewhere%shift_it:32
%elsewhere%staff:-159 %elsewhere%wrong_one:-36 %fails:-26 %fails%how_long:-58 %fails%leave_me:-33 %fails%noise:-30
%fails%on_way:48 %fails%opening:98 %fails%place:-114 %fails%question:47 %fails%refuse:61 %fails%wrong_one:25
%family:-69 %family%how_long:-27 %family%odometer:36 %family%question:-45 %family%refuse:95 %family%thanks:45
%family%wrong_one:25 %gone_car:-74 %gone_car%opening:-29 %gone_car%place:-40 %gone_car%wrong_one:33 %how_long:-110
%how_long%leave_me:65 %how_long%money:104 %how_long%opening:205 %how_long%question:104 %how_long%refuse:-45
%how_long%season:33 %how_long%shift_it:45 %how_long%staff:129 %how_long%start_again:-25 %how_long%thanks:31
%how_long%who:25 %how_long%wrong_one:-29 %leak:38 %leak%on_way:-35 %leak%place:-43 %leak%question:29 %leak%refuse:-36
%leave_me:-55 %leave_me%on_way:-40 %leave_me%place:-44 %leave_me%question:43 %leave_me%who:-27
%leave_me%wrong_one:-26 %lift:-84 %lift%place:-40 %lift%refuse:35 %lift%thanks:58 %machine:-132 %machine%staff:-68
%meaning:-94 %meaning%opening:27 %meaning%place:-65 %meaning%question:-93 %message:-77 %message%on_way:-42
%message%place:-26 %message%question:-67 %message%thanks:29 %money:-86 %money%opening:102 %money%place:36
%money%question:-176 %money%shift_it:61 %money%who:31 %noise:-86 %noise%odometer:27 %noise%place:-71
%odometer%on_way:-31 %odometer%place:31 %odometer%question:46 %odometer%thanks:35 %on_way:-90 %on_way%opening:64
%on_way%question:201 %on_way%season:39 %on_way%shift_it:-60 %on_way%staff:193 %on_way%wrong_one:58 %opening:432
%opening%place:49 %opening%question:122 %opening%refuse:149 %opening%season:40 %opening%staff:145
%opening%start_again:55 %opening%thanks:50 %pay_day:-67 %pay_day%question:-49 %phone%place:80 %phone%question:42
%phone%refuse:-60 %phone%staff:-50 %place:399 %place%question:264 %place%season:-44 %place%shift_it:-33
%place%start_again:130 %place%thanks:-36 %place%who:72 %question:142 %question%season:-56 %question%start_again:-75
%question%thanks:47 %question%who:-125 %question%wrong_one:92 %refuse%shift_it:46 %refuse%start_again:-26
%refuse%wrong_one:-39 %season:61 %season%shift_it:-36 %season%staff:49 %season%wrong_one:27 %shake:-28 %shift_it:65
%shift_it%start_again:-30 %staff:58 %staff%thanks:-42 %start_again:49 %start_again%wrong_one:26 %who:-39
%wrong_one:-26 @?:186 @after_visit:-116 @car:-92 @later:-25 @nothing:29 @odometer:-179 @reading:29 @walk_in:83 ^_a:79
^_abren:27 ^_ahi:-43 ^_am:-28 ^_and:-57 ^_are:65 ^_baja:-32 ^_been:55 ^_buenas:41 ^_can:-42 ^_como:91 ^_cual:-104
^_cuanto:38 ^_de:-133 ^_depende:39 ^_desde:37 ^_did:109 ^_disculpe:-66 ^_do:-38 ^_donde:-36 ^_dont:26 ^_drop:47
^_early:-28 ^_el:-52 ^_en:84 ^_es:-48 ^_estan:44 ^_este:-26 ^_estoy:31 ^_first:72 ^_friday:36 ^_going:38 ^_great:55
^_hableme:44 ^_hace:-68 ^_hacen:-62 ^_happy:26 ^_hasta:52 ^_hay:28 ^_how:51 ^_i:-42 ^_id:-25 ^_in:-47 ^_is:30
^_it:-51 ^_jueves:-26 ^_kindly:63 ^_la:-117 ^_late:-28 ^_llego:-70 ^_lost:74 ^_mande:-48 ^_me:48 ^_mil:25 ^_min:-28
^_mondays:46 ^_my:-70 ^_no:63 ^_oil:33 ^_ok:26 ^_on:32 ^_open:169 ^_pasando:39 ^_phone:31 ^_please:-30 ^_por:87
^_price:75 ^_pueden:-30 ^_puedo:-44 ^_que:33 ^_remind:-31 ^_right:-96 ^_sabado:-69 ^_sale:28 ^_saturday:-115
^_send:93 ^_si:36 ^_sold:-51 ^_solo:-32 ^_sorry:-34 ^_suena:-28 ^_switch:32 ^_thanks:-48 ^_that:43 ^_the:-98
^_there:-25 ^_thursday:46 ^_tienen:73 ^_tires:53 ^_took:-42 ^_top:-35 ^_trabajan:-30 ^_viernes:36 ^_wed:-32
^_wednesday:25 ^_were:-26 ^_what:-48 ^_where:-252 ^_which:39 ^_whichever:-26 ^_why:-46 ^_y:-91 ^_ya:65 ^_yeah:-41
^_yep:25 ^_your:-83 a:35 a_$:-27 a__derecha:40 a__gente:45 a__hora:-113 a__horas:101 a__how:-29 a__le:-27 a__like:36
a__misma:-25 a__pero:-36 a__please:-48 a__que:-34 a_bot:-52 a_coffee:-45 a_dos:-29 a_esa:38 a_la:34 a_lunch:36
a_million:-25 a_person:53 a_que:45 a_while:53 abiertos:72 abiertos_$:30 about:-64 abre:-34 abren:233 abren_$:-52
abren__sabados:38 abren_los:38 across:-94 across_the:-92 address:66 after__close:-44 after_the:56 after_you:-25
afuera:56 afuera_$:59 agarro:110 ah:-36 ahora_$:25 ahorita:-27 air:39 al:77 al_otro:38 algo:-41 algun:26 all:-58
all__what:28 all__you:-32 alley:79 already_$:26 also:-33 also__you:-33 also_do:-33 alto:34 always:37 am__going:-27
am_is:50 amarillo:56 an:-63 an_opening:-36 and:91 and__am:53 and__are:-43 and__have:-26 and__i:68 and__me:36
and__price:49 and__that:39 and__the:-30 and__there:-52 and__would:55 and_are:28 and_can:-33 and_what:-42 and_where:48
and_you:-53 anda:-61 ando:-43 ando__en:26 ando_en:-29 annoying:-28 annoying_$:-28 antes_del:-42 any__this:-30
anyone:33 app:-27 aqui_$:58 aqui__es:-38 are:138 are_$:-80 are__a:-89 are__at:45 are__charging:-32 are__closed:47
are__doing:-26 are__from:28 are__guys:-49 are__hours:41 are__in:46 are__on:46 are__open:111 are__still:74
are__there:191 are_the:-32 are_you:233 are_your:56 area:27 around_$:-29 as:54 asi_no:32 asking:-27 at:94
at__could:-29 at__light:56 at__the:-26 at__what:63 at_noon:34 at_or:80 at_the:30 atienden:44 atras:50 atras_$:-26
atrasado:63 autopista:36 autopista_$:37 avenida:38 back_$:52 back_out:27 baja:-33 baja_por:-32 bajando:-29 bank:43
bay:33 be:-89 be__the:-30 be__there:-27 be__you:-28 be_done:43 be_stuck:-27 be_without:-27 been_a:60 before_$:55
before__open:-36 before_you:-80 behind_$:-35 behind_the:43 bien:-45 blanco:37 blue:59 bot:-52 bot_$:-52 both_are:-26
box:58 brakes:-44 brand:-40 bridge:46 bring_my:53 buena:-45 buenas:41 buenas_tardes:40 bueno:28 building:51 bus:31
by:91 by_$:-29 by__time:-27 by_the:193 caer:78 call_me:-35 calle:57 cambiaron:79 camino:-32 can__call:32 can__come:41
can__do:-57 can_i:104 can_text:31 can_you:-61 cancele:-30 cant:58 cant__in:56 cant__it:-30 cant__you:61 cant_see:28
car:-51 car_is:-49 car_wash:37 card:50 cards:-29 cards_$:-29 carros_$:45 casi_llego:34 celular:-41 cerca_$:-37
cerrado:-40 cerraron:102 charging:-38 church:-35 cierran:102 cita_$:36 cita__no:-56 class:67 close:46 closing:67
code:89 coffee:-45 come_$:42 come__the:47 come_in:-82 come_off:47 come_to:26 comer_$:25 como:-40 como_$:47
como__de:37 como__las:-30 como__que:-52 como_a:-77 como_en:-25 como_llego:226 como_no:-29 con:-69 con_el:-26
con_la:29 con_ustedes:-27 cool:-26 corner:-25 cosa:-40 cosa_de:-25 costo:32 costo_y:28 could__be:-30 could__me:-30
could_you:-26 county:90 cross:41 cross_street:41 cuadras:-28 cual:132 cual_$:-36 cual__es:107 cual__su:39 cual_de:70
cual_es:29 cuando:-26 cuantas_horas:-43 cuanto__y:25 cuanto_es:-35 da:35 dan:-33 dando:55 day:-46 day_$:35 days:-65
days_$:-42 days__you:46 de:-28 de_$:-31 de__calle:-47 de__dos:76 de__en:-30 de__es:-116 de__hora:31 de__iglesia:-42
de__llantas:44 de__los:-57 de__me:-35 de__son:-36 de_aqui:65 de_donde:-300 de_la:33 de_lado:-25 de_las:107 de_mi:-27
de_noche:72 de_quien:-54 de_siempre:28 de_una:36 de_ustedes:113 de_verdad:-38 deja:54 dejarlo:-29 dejo:-66 del:70
del__que:-33 del__se:-43 del_aceite:-33 del_hospital:27 del_trabajo:33 delante:-27 depende:39 derecha:39 desde:95
desde_el:44 desde_que:58 despues__la:-42 despues_de:-51 despues_del:73 dia:-49 dia_$:51 dia_de:-29 dias:80 dicen:-25
did:-25 did__find:-27 did__get:-64 did__move:129 diga:55 direccion:63 direccion_$:49 direccion__favor:71
direccion_por:71 direccion_se:-82 directions:47 disculpe:-66 do:117 do_$:-31 do__close:68 do__do:-34 do__doors:102
do__for:-25 do__get:74 do__guys:-67 do__have:30 do__know:-63 do__need:-53 do__open:74 do__shut:117 do__take:-31
do__turn:-30 do__use:41 do__work:92 do_i:162 do_the:90 do_you:71 does:33 does__get:34 does_the:-29 dog:43 doing:-43
doing__it:-26 doing_to:-26 domingo_$:89 domingos_$:28 donde:26 donde__el:-41 donde__escriben:-34 donde__que:-60
donde_es:94 donde_estan:93 donde_mero:30 donde_quedan:62 done_$:42 done__the:-33 done_by:-25 donut:44 door:118
door_$:-32 doors:-77 doors_$:-56 doors_open:-88 dos_$:-30 dos__es:113 down:-43 drive:-25 driveway:51 drop:112
drop__at:-28 drop_box:63 drop_it:58 drop_me:53 drove:30 dude:-64 due:-100 dura:-26 earlier:-38 earliest:-29 early:115
easter:67 easter_$:66 el:76 el_$:-31 el__como:27 el__de:69 el__del:32 el__despues:-28 el__dia:-25 el__en:-83
el__entonces:30 el__es:42 el__hasta:46 el__las:45 el__manana:-29 el__o:34 el__por:48 el__rojo:-33 el__taller:-26
el_alto:42 el_domingo:-69 el_favor:50 el_foco:-33 el_freeway:52 el_liquido:-31 el_lunes:31 el_mismo:26 el_numero:29
el_taller:92 el_trabajo:-28 el_viernes:-34 email:-28 en:81 en_$:-32 en__calle:44 en__del:-32 en__gasolinera:-25
en__mismo:67 en__rato:-26 en__sala:-41 en_camino:-32 en_cual:168 en_el:47 en_eso:-38 en_otro:-57 en_que:207 en_un:-26
en_vez:-26 encuentro:57 entendi:30 entonces:-30 entonces_$:-43 entra:37 entrada_$:31 entrance:94 entro:50 entro_$:66
entro_a:-25 era_$:30 es:181 es_$:55 es__cita:25 es__de:46 es__el:55 es__o:86 es__taller:-25 es__ya:27 es_de:-63
es_el:91 es_en:76 es_este:-42 es_gratis:-39 es_la:36 es_lo:-44 es_por:91 es_su:39 es_urgente:-34 esas:-37
escriben:-34 escriben_$:-34 ese:35 ese_taller:45 eso:-72 eso_$:-37 eso__que:-31 eso__se:-41 eso_del:28 eso_es:39
esos:-49 esta:33 esta__a:37 estan:86 estan_$:50 estan__la:35 estan_abiertos:72 estan_ustedes:-30 estaria:-36 este:-75
este__el:-26 este_es:-26 este_numero:-28 esten:-28 esto:-31 esto_$:-27 eve:68 even:27 even_open:71 evenings:68
ever:30 exit:92 fa:30 fa_$:31 far__you:28 far_are:28 favor:56 favor_$:29 favor_de:51 feed:32 feed_store:32 fila:-33
filtro:-31 final:-35 find:43 find_you:96 first:-40 first_thing:73 fluid:-40 foco:-33 foco_rojo:-33 for:66 for__is:75
for__oil:-41 for__so:28 for_a:-41 for_it:49 for_me:-30 for_my:108 for_us:37 for_what:-58 for_you:69 forget:43
four:-33 free:-28 free_or:-38 freeway:44 friday:-45 friday__instead:-27 friday_at:42 from__place:-27 from_the:130
front:38 front_$:68 fue:55 garage__the:32 gasolinera:35 gastadas:-37 gente:51 get:89 get__back:-30 get__you:73
get_for:-28 get_my:-56 get_the:-44 get_there:142 get_to:109 go_to:-50 goes:-35 good_but:35 got:-83 got_anything:-41
gracias:31 gracias__que:42 grande:30 great:50 grua:-31 guy:-41 guys_$:-76 guys__on:79 guys_are:-28 guys_open:-47
guys_still:37 habia:29 hablan:-39 hablan_$:-39 hableme:36 hableme_para:47 hace:-88 hace_$:-31 hago:-33 has:29
hasta:116 hasta__hora:235 hasta__me:-39 hasta_que:132 have:-75 have_anything:56 havent:-29 hay__de:36 hay_quien:31
here:-70 here_$:-47 hice:68 hice_$:65 hill:56 hill_$:56 hiring:-61 hiring_$:-61 holiday:36 hood:-48 hora:77
hora_$:-36 hora__a:37 hora__la:39 hora__lo:-25 hora__para:26 hora__que:-31 hora_abren:37 hora_cierran:46 hora_de:30
hora_estan:47 hora_me:-58 hora_que:-40 horario:46 horas_me:-29 hospital:33 hospital_$:33 hour:-56 hours:56
hours__it:-40 hours__the:-54 hours__you:-27 hours_is:-37 hours_on:-40 hours_to:-29 how__are:118 how__can:29
how__does:36 how__hours:-149 how__i:35 how__the:-46 how__you:-37 how_about:-60 how_come:-28 how_do:32 how_does:63
how_far:29 how_late:131 how_long:-73 how_many:-136 how_much:-28 how_to:31 human:-38 human_$:-38 i__in:-25 i__it:62
i__my:56 i__only:-50 i__that:-53 i__the:-40 i__there:37 i__these:-67 i__thursday:70 i__up:63 i__where:30
i__without:-28 i_bring:33 i_can:-46 i_cant:38 i_come:81 i_could:-35 i_drop:29 i_get:88 i_going:-27 i_have:-26
i_know:-44 i_left:28 i_pick:25 i_pull:56 i_sat:-29 i_shall:-35 i_turn:-36 i_use:82 i_work:-47 id:-81 if_i:48
if_youre:28 iglesia:-42 ill:-74 ill__over:55 ill_be:-42 ill_have:-53 im:-34 im__at:-31 im__for:41 im__of:-28
im__the:31 im__what:-36 im__your:-30 im_at:52 im_coming:37 im_down:-36 im_good:36 im_in:64 im_out:-28 in_$:159
in__drop:-36 in__summer:27 in_on:42 in_the:-86 in_tomorrow:-61 in_your:-41 info:-44 info_$:-43 instead_$:-31
interstate:49 is:78 is__a:-97 is__again:29 is__and:26 is__at:-59 is__best:26 is__for:51 is__free:-33 is__hours:38
is__i:-30 is__is:44 is__it:26 is__labor:-33 is__open:-43 is__still:-56 is__the:89 is__there:131 is__wifi:-31
is__you:63 is_a:25 is_due:-45 is_friday:-47 is_it:150 is_my:-80 is_open:-48 is_that:119 is_the:93 is_there:-61
is_this:-40 is_thursday:-74 is_what:65 is_when:38 is_your:116 it:-39 it_$:-64 it__a:56 it__and:25 it__at:47
it__done:42 it__due:-37 it__if:-27 it__morning:48 it__of:94 it__or:64 it__this:30 it__to:-29 it__what:-29 it__you:-25
it_after:44 it_back:-55 it_be:34 it_cost:33 it_for:-34 it_friday:64 it_in:-48 it_is:-47 it_off:64 it_still:-41
it_that:68 it_the:125 it_up:-50 it_what:33 izquierda:38 jaja_si:-26 jueves:-53 junta:-27 junto:29 just:-39
just__you:-28 keep:57 keys:-34 kind:-36 kindly:61 kindly__me:63 know:-33 know_it:48 know_you:-43 la:60 la_$:33
la__anda:-57 la__antes:-34 la__del:42 la__el:-31 la__hora:-55 la__la:56 la__no:35 la__por:43 la__que:-53 la__se:-86
la__si:-52 la_autopista:36 la_calle:-38 la_cita:31 la_direccion:-92 la_entrada:60 la_gasolinera:35 la_iglesia:-42
la_manana:-34 la_misma:61 la_rueda:36 la_sala:-41 la_ubicacion:59 la_ultima:54 labor_$:-33 lado:-73 lake:59 lake_$:72
las_$:-43 las__en:-62 las__por:26 las__que:-32 las_dos:94 las_en:-30 las_horas:-32 las_once:-27 last_time:-64
late:117 late__i:101 late__the:-25 late__there:-28 late__you:44 late_are:72 later:-25 le:-61 le__el:-25 le__y:57
left:61 les:-35 les_dejo:-29 let:-25 lets_out:25 light:28 light__the:47 liquido:-42 liquido_$:-31 llamenme__me:27
llamenme_y:28 llantas:28 llantas_usadas:25 llegar_$:93 llego:-69 llego_$:54 llego__tarde:-38 llego_como:-69 llegue:28
llegue_el:32 lleven:30 lo:-85 lo__la:35 lo_de:35 lo_recojo:-33 local:144 location:32 location_$:47 lock:-66 lol:-82
lol_$:-59 long__it:-30 long__take:25 long_is:-33 long_it:25 los_domingos:30 los_frenos:-60 los_que:32 lost:59 lot:-76
lugar:52 lugar_de:32 lunch:63 lunch__is:32 lunes__es:54 lunes_que:54 luz:-40 mail:37 main:80 mal:-55 mall_$:27 man:52
manana_$:-64 manana_temprano:34 manda:91 mandame:107 mandaron:-26 mande:-48 mande_$:-40 mano:39 many:-135
many__is:-37 many_hours:-137 marqueme:27 marqueme_y:41 martes_me:27 mas_$:-41 mas__a:-28 mas__como:-38 mas_y:29
may:50 may_i:60 me:-37 me_$:-54 me__como:54 me__en:-46 me__it:-34 me__la:127 me__las:-33 me__monday:28 me__para:-58
me__sin:33 me__tarde:31 me__the:-55 me__your:63 me_a:113 me_da:35 me_diga:55 me_escriben:-34 me_for:-25 me_hace:30
me_how:30 me_la:-61 me_manda:91 me_mandaron:-26 me_paro:96 me_pasa:35 me_prendio:-33 me_puede:-40 me_queda:-28
me_quedan:-32 me_recuerda:26 me_so:28 me_to:-47 me_toca:-25 me_va:69 me_what:-37 means:42 media:-40 menos:-26 mero:40
meto:30 mi:-43 mi__de:-35 mi_cita:33 mi_dia:-26 mi_horario:-44 mientras:-81 mientras_$:-48 miercoles_y:37 millas:49
million:-25 min_$:-38 min_tarde:-37 misma:49 misma__de:47 misma_hora:-37 mismo:36 mismo__de:37 mismo_dia:-25 miss:-28
monday:-60 monday_$:-46 monday_and:28 monday_morning:25 mondays:61 mondays_$:25 morning_$:70 move:145 moved:-26
much:-31 muy:-32 muy_bien:29 muy_lejos:-27 my:-29 my__has:37 my__in:60 my_dog:48 my_hood:-45 my_info:-45 my_sister:26
nearly:-34 need:-53 never:-37 new:104 next__the:51 next_to:52 next_week:-38 night:28 ninos:-32 no__a:35 no__de:-47
no__eso:-28 no__esta:-30 no__good:35 no__is:-50 no__la:-26 no__lunes:-43 no__nadie:27 no__por:25 no__puede:32
no__que:37 no__sabado:-26 no__veo:36 no_alcanzo:-30 no_el:-25 no_es:-49 no_gracias:58 no_la:56 no_los:36 no_mas:-26
no_me:-28 no_para:-28 no_prende:27 no_se:41 no_what:-44 noche:58 noche_$:47 nomas_que:29 noon:45 north:71 not_this:39
not_tomorrow:27 now_$:77 nueva:25 nuevo:27 nuevo_en:26 number_again:38 numero_$:-31 o:137 o__de:79 o__el:62 o__es:-45
o_como:50 o_de:-54 o_el:60 o_es:-26 o_mas:27 o_que:-40 of:36 of_$:50 of__do:-37 of__two:103 of_oil:-36 of_the:-35
of_town:-56 of_your:161 off:-25 off_$:-73 off__and:54 off_for:87 off_of:41 off_the:41 oil:-58 oil__you:-41
oil_change:32 ok__a:26 ok__el:30 old:-57 on:77 on_$:-43 on__and:42 on__day:26 on__hill:56 on__is:-55 on__road:-45
on_saturday:94 on_saturdays:88 on_th:40 on_the:-61 on_thursday:31 on_what:-58 on_your:-48 once:-46 onda:-45 one:101
one_$:-26 one__it:49 one__the:55 one__you:80 one_is:48 only:-72 only_do:-50 open:136 open_$:-219 open__me:-37
open__the:-35 open_for:-37 open_tomorrow:78 opening_$:48 opens:-31 or:71 or_$:96 or__a:-27 or__it:59 or__you:53
or_are:26 or_is:50 or_th:42 or_the:45 or_what:-31 other:-35 otra_vez:29 otro_$:35 otro__mas:102 otro__me:-26
otro_lado:-32 otro_taller:-64 out:40 out__door:-34 out__the:33 out__town:-28 out_by:34 out_front:94 out_of:-45
out_the:-36 over:77 over__the:89 over_by:76 oye:31 para__es:-34 para__lado:-29 para__me:86 para_eso:-35 para_la:-60
parking:-36 parking_$:-53 paro:64 pasa:36 pasa_la:35 pasame:42 pasando:39 pasar_$:33 paso_manana:31 pass:51
passenger:-27 past:82 pegado:28 perdido:63 pero_que:-25 pero_se:38 person:52 phone:26 phone_me:36 pick:32 pick_up:51
pierdo:35 pin:245 pin_$:160 place:30 place_$:26 place__the:-37 please:46 please_$:75 please__me:-32 plis:28 plis_$:28
pone:-31 popped:-49 por:54 por__calle:30 por__rumbo:101 por_ahi:-26 por_cual:96 por_donde:148 por_fa:30 por_las:-32
por_un:-40 porque:-58 pregunta:25 prendio:-33 price:48 price_$:-25 price__the:-83 price_and:42 price_on:32
problema:-61 pueblo:45 pueden:-30 puedo__el:-27 puedo_a:46 puedo_llegar:-48 puedo_ver:-34 puente:59 puente_$:39
pues:32 pues_$:32 pull:48 put:-31 put_the:-25 que:32 que_$:-108 que__a:-33 que__abren:37 que__al:-27 que__cierran:52
que__de:-37 que__el:-32 que__en:-32 que__eso:-53 que__estan:42 que__hacen:54 que__hay:49 que__la:-28 que__los:34
que__me:82 que__por:-41 que__puedo:106 que__reciben:76 que__se:48 que__tienen:62 que_calle:54 que_dia:-26 que_dias:60
que_direccion:53 que_es:-100 que_esta:36 que_hay:28 que_hora:171 que_horario:65 que_horas:106 que_la:47 que_le:37
que_me:-50 que_tal:-43 que_tan:-44 queda:-152 queda_$:-44 queda__lejos:-27 queda_muy:-27 quedan:96 quedan_$:32
quede_sin:35 quick:-25 quien:-46 quien_$:-75 quiero_$:-26 radio:-42 rate:-27 rate_$:-27 rato:-29 rd:42 reach:47
reciben:50 recuerda:26 remind:59 remind__what:-35 remind_me:59 rent:-32 retrasado:29 right:38 right_$:114
right__the:40 right__you:-104 right_after:25 right_now:-44 right_when:-41 road:-42 road_$:-47 rojo:-52 roll:35
roof:36 round:64 rueda:37 ruido:27 rumbo:100 run:-25 running_late:-34 rush:-36 sabado:40 sabado__la:-30 sabado__no:29
sabado_a:-31 sabado_en:-26 sabados_$:-34 said:-32 sala:-41 sala_$:-41 sale_el:29 salgo__la:-35 salida:41 same:61
same__as:100 santo:46 sat:-29 sat_$:35 sat_morning:-29 saturday_$:41 saturday_hours:164 saturdays:46 saturdays_$:42
say:-45 says:-31 se__de:63 se__hace:31 se__no:27 se__prendio:-33 se__que:27 se__y:34 se_cambiaron:117 se_lo:-40
se_me:-39 se_oye:31 se_puede:28 se_queda:-27 see:-51 semaforo:40 send:94 send__a:55 send_me:63 sent:-54 set:-41
shall:-35 shift:46 shop:46 shop_$:185 shop__the:57 shop__this:-62 shops:40 should_i:-29 show:110 shredded:53 shut:86
shut_$:35 si__de:-36 si__el:103 si__estan:43 si__no:-29 si__que:60 si__viernes:-39 si_como:-29 si_es:-38 si_hay:-41
si_nomas:39 si_se:-30 side:174 side_$:38 side__the:45 side_of:53 siempre_$:65 siendo:45 sigue:26 siguen:97
siguen__el:50 siguen_en:91 siguiente:-30 sin_frenos:39 sister:26 six:78 slot:-26 so:-29 so__can:25 so__is:-28
so_monday:27 sold:-50 solo:-31 some:-25 some_other:-29 somebody:53 somebody_there:124 someone__me:-54 someone_call:32
son_$:-35 sorry:-38 spare:36 spot:79 st:25 station_$:25 still:47 still__by:27 still__to:31 still_have:-26 still_on:31
still_over:75 street:71 stuck:-29 stuck_there:-27 stuff:-30 su:77 suena:-41 sunday__monday:-35 sunday_night:-29
sunday_or:-61 sundays:38 supposed__be:-25 swap:-28 switch_to:26 take:-43 take_a:36 tal:-80 tal_el:-43 taller_$:37
taller_de:-63 taller_es:41 taller_me:-26 tambien:32 tan:-61 tan__estan:-58 tardan:26 tarde_$:-46 tarde_por:31
tarde_porque:-41 tardecito:-27 tardecito_$:-27 tardes:40 temprano__que:39 ten:-37 tendran:-39 tengo:-32 tengo_que:-29
text__again:33 text_me:33 th_and:45 th_or:-29 thanks__million:-25 thanks_a:-25 that_$:-113 that__when:36 that_is:65
that_the:103 that_you:-41 the:92 the__and:-48 the__are:43 the__at:33 the__before:25 the__behind:50 the__box:75
the__by:96 the__can:28 the__go:30 the__in:-60 the__is:-51 the__left:56 the__lot:-33 the__of:-66 the__off:-25
the__on:99 the__one:-77 the__open:-88 the__or:41 the__out:39 the__parking:-43 the__place:25 the__please:-27
the__price:-37 the__right:27 the__station:25 the__still:-45 the__store:27 the__street:80 the__stuff:-26 the__that:-44
the__the:-33 the__tire:61 the__tower:90 the__way:26 the__were:-40 the__what:-44 the__with:119 the_bank:51 the_blue:60
the_bridge:66 the_car:-58 the_doors:-103 the_drop:71 the_feed:32 the_hill:56 the_interstate:49 the_keys:-35
the_lake:59 the_light:56 the_old:28 the_one:56 the_place:49 the_right:37 the_road:-46 the_shop:41 the_street:-95
the_summer:27 the_th:-63 the_time:-50 the_water:94 the_way:-39 the_week:41 the_weekend:-27 the_wrong:-39 then:-73
then_$:-79 then_you:44 there:44 there__a:-33 there__i:-25 there__the:26 there__you:26 there_a:-76 there_is:-57
there_on:91 these:-75 these_off:-111 they:-54 they_$:-41 thing:25 thing__you:80 this:-46 this_$:-68 this__you:28
this_and:26 this_for:75 this_the:-61 this_time:-33 this_week:57 though:31 though_$:25 three:-26 thurs:-25
thursday_$:36 thursday_at:-89 tiene:-29 tiene__el:-35 tiene__y:-30 tienen__de:57 tienen_donde:-72 tienen_lugar:-29
till:93 till__time:107 time:36 time_$:-42 time__the:50 time__you:56 time_and:51 time_do:51 time_i:-31 time_it:-28
times:25 tire__out:51 tires:-46 tires_$:-93 to:36 to_$:58 to__it:-27 to__please:29 to__these:-50 to__to:40 to_back:26
to_get:74 to_saturday:31 to_the:26 to_you:46 todavia_estan:62 today:36 today_$:37 tomorrow__is:63 too:-31 took:-35
top:-53 top_off:-36 tortillas:-32 tower:90 town:64 town_$:70 trabajan:173 trabajar:-27 trabajo:-31 trae__ruido:27
trae_un:26 trailer:45 trip:-27 tuesday:-38 turn:-102 turns:-40 two_hours:-94 ubicacion:76 ubicacion_$:45 ultima:45
un:-63 un_rato:-26 un_ruido:27 una:-41 una__o:26 unlock:-43 unos:-46 up:31 up_$:66 up__it:44 up__the:-32 up_at:-26
up_for:44 up_the:37 up_to:29 us:42 usadas:25 use:69 used:-33 usted:-25 ustedes:39 ustedes_$:62 va:37 va__lado:-26
va_de:-26 va_que:-32 verdad:55 verdad_$:27 viernes__a:35 viernes__que:54 viernes_santo:46 voy_$:-42 voy__camino:-32
voy__porque:-41 voy_a:-66 voy_en:-32 voy_retrasado:29 vuelta:-32 vueltas:42 was:-58 wash:37 water:87 way:-30
way__you:-39 we:-32 week:51 week_$:58 weekend:-88 weekend_$:-47 weekends:59 were:47 were_happy:-29 what:50
what__are:-132 what__do:44 what__it:-92 what__that:-49 what__the:57 what__your:95 what_are:-36 what_did:-33
what_do:-51 what_is:-41 what_street:49 what_time:190 what_you:-57 when:-27 when__i:-37 when__it:98 when__turn:-36
when__you:169 when_do:184 when_i:-55 when_the:-127 when_would:42 when_you:-139 whenever:26 where:40 where__are:67
where__at:29 where__i:26 where__the:-92 where__your:48 where_are:83 where_did:-83 where_is:-48 where_you:41 which:145
which__are:-100 which__do:197 which__is:-45 which_days:46 which_entrance:49 which_shop:-181 which_side:43
whichever:-33 while:63 who:-95 who__this:26 who__you:-88 who_are:-88 why:-83 why__you:-52 why_are:-38 wifi:-35
wifi_$:-30 will:-29 with_$:-138 with_a:58 with_the:123 without:-27 work_on:-33 would_be:-25 would_it:47 wrong:-47
y:45 y__al:-27 y__es:-30 y__me:25 y__o:-36 y__va:66 y_a:-25 y_como:32 y_digame:26 y_donde:29 y_en:98 y_ese:-34
y_me:58 y_media:-37 y_no:51 y_que:-33 y_ya:-37 ya__llego:29 ya_casi:30 ya_estan:-61 ya_estoy:-26 ya_la:-36 ya_que:-31
ya_se:26 ya_voy:28 yeah:54 yeah_$:81 years:56 yep:25 yes:-29 yes__are:129 yes__how:-40 yes_lets:-40 yes_please:-48
yet:-53 yet_$:-51 you:191 you_$:-87 you__a:32 you__anything:55 you__are:-27 you__at:51 you__bot:-52 you__closed:34
you__have:-26 you__i:35 you__keep:49 you__me:-54 you__monday:38 you__my:-57 you__on:82 you__open:62 you__still:37
you__text:31 you__there:68 you__up:25 you__what:52 you_a:-89 you_all:-32 you_are:-96 you_at:40 you_charging:-32
you_close:51 you_closed:47 you_could:-29 you_do:-37 you_doing:-26 you_find:-27 you_folks:31 you_from:102 you_get:-96
you_have:34 you_hiring:-38 you_if:47 you_in:118 you_know:44 you_move:125 you_need:-51 you_on:145 you_open:257
you_say:-43 you_shut:103 you_still:202 you_the:93 you_there:-106 you_think:-25 you_up:-87 you_use:-55 you_with:-139
you_work:92 your:81 your__hours:65 your__is:-57 your_garage:26 your_hours:112 your_shop:53 youre:45
"""
