"""What speaks for and against `unclear`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "unclear"
BIAS = -66
WEIGHTS = """\
#aben:62 #abla:35 #able:-25 #abor:-31 #acce:31 #aced:-38 #acei:41 #acen:151 #acep:150 #achi:69 #actu:117 #adas:37
#addr:-60 #adel:-30 #adio:27 #ador:134 #ados:31 #adre:41 #afte:-36 #agai:54 #agar:45 #agen:39 #ages:-50 #agos:35
#agua:-61 #ague:34 #ahor:-27 #aigo:-30 #ailb:25 #aile:79 #aire:76 #aiti:38 #ajaj:79 #ajan:54 #ajes:-77 #akes:-63
#alam:30 #alan:36 #algo:-54 #algu:38 #alia:26 #alie:-28 #alin:33 #alki:28 #alle:-66 #allp:-62 #ally:-80 #alon:-25
#alre:-52 #also:80 #amal:30 #amar:-27 #amat:33 #ambi:45 #amen:-30 #amor:29 #amos:-50 #anas:66 #ance:-25 #anci:28
#anda:44 #ando:-78 #anej:71 #aner:27 #anne:-25 #anoc:33 #anol:31 #anos:69 #ansm:32 #ante:-37 #anti:55 #anty:35
#anym:42 #anyo:49 #apel:26 #apid:-30 #appo:-30 #apto:26 #aqui:84 #aran:61 #ards:58 #aren:-30 #arge:-73 #aria:-31
#arje:86 #arki:32 #arle:48 #arli:-40 #arly:-54 #arme:-80 #aron:-53 #arou:-33 #arra:37 #arre:32 #arri:49 #arro:58
#arse:33 #arta:37 #arti:93 #arts:37 #asap:-30 #asdf:256 #asdk:127 #aseg:55 #ases:28 #asse:31 #asta:-53 #aste:74
#atan:75 #atch:-60 #ater:53 #atic:95 #atis:-51 #ativ:-45 #ator:-50 #atra:-34 #atul:70 #auto:182 #avad:33 #aves:26
#avia:34 #avin:-29 #ayme:67 #babe:34 #baja:40 #ball:-65 #bano:75 #bate:34 #befo:-26 #bend:-28 #best:-25 #biar:-30
#bici:42 #bien:86 #bike:75 #blan:89 #blar:-43 #blem:-26 #bles:-40 #bloc:62 #boat:38 #body:-50 #bonj:88 #book:-28
#brak:-46 #brig:79 #brin:136 #bscr:-29 #buen:-29 #cade:26 #cafe:39 #call:-70 #camb:-95 #came:-49 #cant:25 #canz:-28
#card:101 #carr:43 #cars:52 #cart:35 #casa:87 #cash:49 #cati:-63 #ceit:41 #cept:147 #cerc:34 #chai:37 #chan:-31
#char:-85 #ched:-38 #cher:28 #chin:41 #cial:-47 #cibo:87 #cita:-84 #cked:95 #ckin:-32 #ckup:-36 #clai:27 #clea:34
#cles:37 #clic:121 #clim:36 #clos:-48 #cobr:-65 #code:79 #coff:28 #coma:63 #comp:96 #cond:30 #cong:79 #cont:48
#corn:34 #cosa:26 #cost:-84 #cove:-29 #cred:122 #crui:32 #cted:25 #ctio:-28 #ctri:63 #ctua:41 #ctur:119 #cuar:-26
#cuen:-71 #cupo:43 #curr:58 #cycl:60 #darm:-27 #date:36 #davi:34 #days:-63 #ddre:-60 #deci:-28 #dedo:52 #deja:45
#deje:-59 #dela:-27 #dele:-37 #deli:55 #deme:-53 #depo:67 #desc:-92 #deta:39 #dies:49 #digo:84 #dijo:28 #dimo:-26
#dinn:76 #dire:-69 #disp:43 #dist:79 #dito:105 #dler:25 #does:44 #dogs:41 #domi:-27 #dond:74 #dont:-36 #door:53
#dora:54 #dore:56 #down:-65 #dres:-73 #drio:45 #driv:41 #drop:103 #dule:-39 #eaci:40 #eage:-25 #eagu:29 #eaki:32
#eall:-132 #earl:-96 #ease:-47 #eats:28 #eave:67 #eces:-64 #eche:27 #echi:-28 #ecia:-85 #ecib:105 #ecio:-82 #ecoj:27
#ecte:26 #ectr:63 #edal:-26 #edes:53 #edit:120 #edul:-39 #eels:-28 #eena:34 #eeri:-40 #eeti:51 #efie:-26 #efor:-26
#egla:76 #egue:26 #egui:-59 #egur:72 #eite:43 #eith:-45 #ejan:97 #ejar:51 #ejem:-30 #ejen:-27 #elan:-36 #elec:90
#eliv:58 #ello:-84 #else:-30 #emai:86 #eman:-40 #empr:-64 #empt:38 #enag:34 #ende:167 #endi:-45 #ends:37 #enen:137
#enes:-28 #engi:-36 #enme:-82 #enos:-56 #enta:25 #ente:46 #enti:-38 #entl:55 #ento:-55 #ents:34 #epai:28 #epla:-34
#eply:76 #epos:65 #epta:158 #equi:-25 #eran:-28 #erar:-64 #erca:32 #ered:36 #eren:-53 #eres:31 #eria:41 #erin:-46
#erio:-30 #erlo:-25 #erst:43 #erti:52 #erwo:46 #escr:57 #escu:-74 #esda:-28 #esel:46 #espe:-60 #espo:49 #essa:56
#esta:57 #esto:-26 #etai:40 #eter:-50 #etin:48 #evar:108 #even:-29 #ever:-91 #evis:39 #evok:-30 #exam:61 #expl:-30
#exti:-41 #exto:-35 #exts:-26 #fact:86 #feel:-29 #fell:51 #ffee:28 #ffic:67 #ffle:28 #fica:25 #fice:83 #filt:-27
#fina:32 #fine:-30 #fini:-54 #firs:-37 #fore:-42 #foto:91 #four:-37 #free:-51 #fren:-93 #frij:32 #from:33 #fter:-36
#fuga:-28 #gado:91 #gain:54 #game:83 #gana:77 #gano:46 #gara:45 #gend:-74 #ghts:-29 #gift:67 #gine:-36 #give:-30
#glan:81 #glas:62 #gles:111 #goin:-37 #good:-31 #grad:-26 #grat:26 #grea:-29 #grua:70 #gual:-30 #guan:-25 #guar:60
#guie:43 #guir:-56 #gura:55 #hace:98 #hago:-26 #haha:58 #hair:29 #hanc:-25 #hank:-25 #harg:-81 #hast:-28 #head:-37
#hedu:-39 #hell:-72 #here:122 #hese:-47 #hiel:37 #hijo:26 #hile:26 #hina:-28 #hine:61 #hink:-34 #hiri:101 #hitc:47
#hole:-32 #home:38 #hora:-58 #hosp:-25 #hrou:36 #hurs:-46 #husb:-34 #hutt:40 #hybr:27 #iado:27 #iben:25 #ible:-26
#icat:30 #icie:-25 #icku:-36 #icos:64 #ictu:43 #idea:51 #idri:45 #ieja:27 #ield:31 #iemp:-36 #iend:28 #iene:-32
#iere:-34 #iero:-28 #iese:50 #ieza:46 #ific:31 #igad:68 #igua:-35 #ilbo:25 #iler:71 #illa:53 #imag:159 #imat:-28
#imit:25 #imos:-29 #impi:57 #indo:74 #inea:38 #ines:39 #info:-52 #ingl:102 #ingo:-42 #ingu:-25 #inis:-51 #inne:75
#inos:27 #insp:43 #inst:35 #intm:-29 #into:55 #invo:72 #ione:55 #ions:88 #ious:-38 #iper:65 #ippe:-29 #irec:-68
#irin:112 #irma:-30 #irst:-37 #irve:41 #isan:102 #isar:-31 #isit:-29 #ista:-30 #iste:39 #itch:30 #ited:25 #ithe:-47
#itin:34 #itor:28 #iver:46 #ivin:84 #izza:27 #jaja:190 #jeje:58 #jeme:-29 #jeta:86 #jour:74 #jueg:78 #just:-76
#keep:-44 #know:-90 #labo:-30 #lady:28 #laim:27 #lain:-34 #lapt:26 #lari:34 #lass:50 #lati:63 #lava:51 #lave:64
#lbox:25 #lcan:-28 #ldnt:-31 #lean:43 #leas:-31 #leav:51 #lect:90 #left:-26 #legi:-29 #lego:32 #legu:25 #lenc:25
#lent:43 #lers:37 #less:-44 #leva:101 #levo:-26 #lgui:26 #lick:41 #lien:-43 #lier:-38 #lies:30 #ligh:-73 #like:-73
#limp:51 #link:37 #list:-80 #live:32 #lkin:28 #llam:-64 #llan:38 #llas:31 #llav:65 #lleg:67 #ller:-28 #llev:90
#llpa:-62 #loan:34 #loca:-94 #lock:60 #look:-25 #loor:25 #lose:-35 #love:61 #lowe:28 #lpar:-62 #lrea:-52 #lueg:36
#luga:-39 #mach:63 #madr:56 #mage:138 #mail:83 #maki:-33 #male:29 #mama:41 #mana:-46 #mand:133 #mane:40 #maqu:60
#marm:-29 #mart:-35 #mati:79 #matt:32 #mayo:-26 #mber:-26 #mbia:-37 #mbie:113 #mbio:-31 #meet:57 #ment:35 #meri:25
#mess:67 #mien:41 #migh:-26 #mijo:36 #mile:-37 #mill:-39 #mind:-34 #ming:-56 #misi:39 #mite:25 #moni:26 #moto:108
#move:-48 #mpan:-31 #mpar:38 #mpia:57 #mple:67 #mpra:31 #mpty:39 #mput:32 #much:-72 #must:-34 #nada:-38 #nage:25
#name:-50 #nanc:35 #ncel:-30 #ncon:-29 #ndam:-25 #ndan:117 #nday:-34 #ndem:-38 #nden:139 #nder:-43 #ndow:85 #neac:40
#nece:-51 #neit:-28 #neja:86 #ners:27 #nest:-25 #neve:-30 #ngin:-35 #ngla:102 #ngle:102 #ngra:77 #nigh:65 #ning:-46
#nino:38 #nion:38 #nish:-65 #njou:88 #nner:53 #nobo:-41 #noma:-48 #none:-26 #nort:-32 #noth:-27 #noti:26 #nsmi:32
#nspe:43 #ntas:82 #nter:-39 #ntes:49 #ntia:50 #ntly:55 #ntme:-29 #ntra:80 #nuev:-52 #numb:-50 #nvoi:74 #nymo:42
#oane:34 #obod:-41 #obot:120 #obra:-59 #obri:68 #ocat:-96 #ocke:68 #ocup:40 #odav:34 #oday:-54 #oddl:25 #offe:48
#offi:83 #oger:-28 #oice:95 #oing:-41 #oint:-41 #okin:-27 #olar:31 #omad:64 #omas:-51 #omat:133 #omer:30 #omet:-25
#omew:28 #omin:-46 #ompl:-27 #ompr:98 #ompu:37 #onad:25 #onde:90 #ondo:74 #onen:69 #ongr:77 #onjo:87 #ontr:78
#ooki:-30 #oone:-30 #oost:30 #open:-149 #orar:-26 #orcy:37 #ores:78 #orio:-32 #orki:30 #orma:-35 #orme:33 #orra:30
#orre:-45 #orry:27 #orth:-37 #orti:57 #osit:63 #ospi:-25 #ossi:-28 #oste:26 #otal:-28 #otor:41 #otos:54 #otra:25
#otro:-27 #ouch:29 #ound:-52 #oure:-38 #over:-100 #owed:31 #pack:55 #paga:38 #pago:30 #pano:31 #pape:68 #park:-39
#part:207 #paym:67 #peak:-53 #peci:-66 #peda:-27 #pedi:26 #pera:-38 #perr:56 #pers:87 #perw:46 #peso:32 #phon:32
#pict:43 #pido:-27 #piez:46 #pint:26 #pita:-25 #pizz:27 #plai:-32 #podr:25 #poin:-38 #pond:72 #pone:61 #pons:30
#pose:28 #posi:56 #pped:-39 #ppoi:-30 #ppos:30 #prec:-63 #pref:-34 #pres:54 #pric:-123 #prin:-41 #prop:29 #ptan:176
#ptop:26 #pued:35 #puer:51 #punt:-27 #quea:41 #ques:30 #quic:-38 #quie:-41 #quin:67 #quit:-51 #quot:-37 #raba:41
#ract:25 #rail:90 #rain:-54 #rake:-44 #rame:-52 #rand:25 #rano:-30 #rant:91 #ranz:44 #rapi:-32 #rari:-29 #raro:-48
#rata:52 #rate:-26 #rati:-61 #rato:-33 #ratu:63 #rcar:-27 #rcyc:37 #rdon:27 #reac:-30 #real:-132 #recc:-27 #rece:29
#rect:-38 #refi:-26 #regl:58 #remi:74 #reno:-67 #rent:103 #repa:32 #repl:55 #resp:100 #ress:-70 #rest:34 #resu:-26
#revi:46 #revo:-31 #rgen:-41 #rger:31 #ribe:-29 #ribo:72 #rica:28 #rice:-124 #rico:48 #riga:68 #righ:36 #ring:110
#rios:45 #riou:-33 #ripp:-32 #rive:-45 #rivi:101 #rjet:86 #rkin:61 #rlie:-40 #rned:50 #rnin:-30 #robo:119 #rong:-48
#ront:-26 #room:65 #ropi:32 #roun:-49 #rran:63 #rreg:47 #rren:43 #rrit:35 #rros:166 #rted:-27 #rtes:53 #rtid:94
#rtil:67 #ruck:-47 #ruis:32 #runk:39 #rwor:46 #sabe:70 #saca:-44 #sada:70 #sage:94 #sala:155 #sale:26 #sali:-30
#same:-47 #says:-59 #sban:-34 #sche:-39 #scue:-69 #sday:-38 #sdkj:127 #sele:27 #sell:90 #sema:-26 #send:83 #seri:-60
#shie:30 #shop:-79 #sibl:-37 #sica:37 #sigo:-30 #sill:30 #sirv:40 #slot:-26 #smis:32 #snow:74 #sold:-29 #soon:-52
#sorr:32 #spac:-31 #span:56 #spea:-53 #spec:-25 #sper:-34 #spit:-25 #spon:122 #spos:-33 #spri:-33 #sque:28 #ssag:79
#ssed:-42 #sses:50 #ssib:-25 #stan:58 #star:-64 #stee:-41 #stic:-33 #stil:33 #stim:-48 #stop:-76 #stre:-37 #stri:-27
#subs:-29 #sung:56 #supp:38 #tail:41 #talk:41 #tall:-42 #tama:30 #tamb:140 #tant:-28 #tard:-32 #tarj:86 #tati:28
#tede:55 #teen:28 #teer:-41 #tely:-25 #temp:-57 #tend:69 #tera:-44 #teri:58 #ters:34 #text:-103 #than:-49 #that:-50
#then:-30 #thes:-48 #thin:-53 #this:-78 #thro:53 #thur:-36 #tica:37 #tice:26 #tico:32 #tido:81 #tiem:-28 #tifi:49
#till:83 #tima:-41 #time:-51 #tint:26 #tire:-37 #tive:-41 #tmen:-29 #toda:-33 #todd:25 #todo:-50 #toma:121 #torc:37
#tore:39 #tori:-27 #tort:76 #tota:-28 #trab:34 #traf:-25 #trai:74 #trat:52 #tree:-26 #tric:63 #trip:55 #truc:-52
#trun:40 #ttle:42 #tual:35 #tula:70 #tura:104 #turb:83 #ture:53 #turn:32 #twic:-26 #twis:-31 #typi:31 #uall:50
#uard:53 #ubsc:-29 #ucho:-58 #ueak:40 #uede:29 #uego:103 #uena:-40 #uent:-77 #uerc:33 #uest:35 #ueva:-35 #ugar:-39
#ught:-30 #uick:-38 #uido:-32 #uien:30 #uina:53 #uise:30 #ulat:70 #uldn:-31 #umbe:-52 #unda:-27 #unde:-43 #ungl:56
#unio:57 #uote:-37 #upan:28 #uppo:29 #uran:69 #urge:-30 #urne:50 #urre:57 #usad:77 #usan:60 #usba:-34 #used:54
#uste:44 #utom:128 #uttl:40 #vado:26 #vend:189 #veng:34 #vere:26 #vers:30 #vert:42 #very:-28 #vibr:-32 #vide:27
#vidr:45 #ving:42 #visa:69 #visi:-57 #voic:96 #voke:-30 #vuel:-36 #walk:28 #want:40 #ward:-27 #warr:35 #weat:31
#week:-35 #went:-30 #were:-44 #when:-36 #whil:26 #wice:-26 #wife:-43 #wifi:243 #wind:107 #wipe:56 #wist:-31 #word:59
#work:59 #woul:-30 #wron:-48 #xtin:-40 #xtos:-32 #ybri:27 #ycle:56 #ymen:67 #ymor:42 #your:51 #ypin:31
%again_later:-121 %again_later%agree:-30 %again_later%call_off:31 %again_later%car:-52 %again_later%car_part:40
%again_later%doubt:35 %again_later%lift:-69 %again_later%noise:37 %again_later%pay_day:-62 %again_later%phone:56
%again_later%question:25 %again_later%season:-25 %again_later%staff:55 %again_later%start_again:79 %agree:-111
%agree%away:-27 %agree%bring:51 %agree%call_off:68 %agree%car:65 %agree%car_part:54 %agree%do_it:33 %agree%doubt:30
%agree%family:36 %agree%how_long:34 %agree%lift:74 %agree%meaning:28 %agree%money:131 %agree%noise:-51
%agree%pay_day:75 %agree%phone:33 %agree%place:26 %agree%question:-72 %agree%refuse:25 %agree%start_again:31
%agree%thanks:-26 %agree%who:25 %agree%wrong_one:32 %away:-56 %away%call_off:36 %away%lift:-27 %away%message:41
%away%odometer:-28 %away%on_way:-37 %away%phone:45 %away%shift_it:-29 %away%staff:84 %bad:-191 %bad%car_part:-37
%bad%machine:-25 %bad%question:30 %bad%staff:-55 %bad%who:45 %bring:-80 %bring%busy:-54 %bring%call_off:31
%bring%car:-36 %bring%car_part:42 %bring%elsewhere:54 %bring%family:115 %bring%leave_me:-55 %bring%money:26
%bring%odometer:53 %bring%opening:37 %bring%place:32 %bring%question:38 %bring%refuse:81 %bring%season:29
%bring%shift_it:59 %bring%who:33 %bring%wrong_one:64 %busy:-39 %busy%family:40 %busy%phone:37 %busy%question:50
%busy%shift_it:34 %busy%staff:38 %call_off:-34 %call_off%do_it:-67 %call_off%elsewhere:42 %call_off%fails:43
%call_off%machine:26 %call_off%money:93 %call_off%noise:25 %call_off%odometer:117 %call_off%on_way:-33
%call_off%phone:35 %call_off%refuse:-37 %call_off%start_again:-74 %call_off%thanks:65 %call_off%who:36
%car%car_part:-62 %car%do_it:27 %car%family:-59 %car%gone_car:-35 %car%noise:-52 %car%phone:40 %car%place:32
%car%refuse:-99 %car%staff:75 %car_part:-55 %car_part%fails:-110 %car_part%leak:-49 %car_part%lift:33
%car_part%machine:-33 %car_part%money:-51 %car_part%noise:-33 %car_part%on_way:-64 %car_part%pay_day:64
%car_part%phone:81 %car_part%place:-42 %car_part%season:49 %car_part%shake:-36 %car_part%shift_it:60
%car_part%smoke_smell:-31 %car_part%staff:36 %car_part%start_again:38 %car_part%wrong_one:25 %do_it:-67
%do_it%family:-94 %do_it%leave_me:36 %do_it%lift:-30 %do_it%money:39 %do_it%odometer:-38 %do_it%on_way:30
%do_it%question:-37 %do_it%refuse:47 %do_it%season:37 %do_it%staff:101 %do_it%thanks:26 %do_it%who:31
%doubt%shift_it:35 %elsewhere:-94 %elsewhere%money:36 %elsewhere%on_way:34 %elsewhere%phone:-25 %elsewhere%place:-43
%elsewhere%who:71 %elsewhere%wrong_one:56 %fails:-41 %fails%message:35 %fails%place:56 %fails%question:49
%fails%refuse:26 %fails%staff:35 %family:83 %family%how_long:29 %family%message:43 %family%phone:-38 %family%place:26
%family%question:69 %family%shift_it:97 %family%start_again:26 %family%who:-57 %gone_car:-49 %gone_car%question:45
%gone_car%refuse:53 %gone_car%wrong_one:39 %how_long:-167 %how_long%money:44 %how_long%opening:-30 %how_long%place:41
%how_long%question:136 %how_long%shift_it:-44 %how_long%start_again:40 %leak:-93 %leave_me:-73 %leave_me%lift:57
%leave_me%on_way:70 %lift:136 %lift%on_way:-34 %lift%place:40 %lift%question:47 %lift%refuse:26 %machine:354
%machine%message:35 %machine%question:62 %machine%staff:39 %machine%wrong_one:33 %meaning:-132 %meaning%money:28
%message%money:77 %message%shift_it:67 %message%start_again:-104 %message%wrong_one:31 %money:-161 %money%on_way:-43
%money%staff:30 %money%who:75 %noise%question:-48 %noise%refuse:39 %noise%start_again:44 %odometer%on_way:67
%odometer%shift_it:-43 %odometer%staff:-44 %odometer%who:29 %on_way:-54 %on_way%opening:56 %on_way%place:98
%on_way%question:77 %on_way%refuse:-31 %on_way%smoke_smell:-26 %opening:-276 %opening%question:-55 %opening%staff:-51
%pay_day:-28 %pay_day%season:-34 %phone:-114 %phone%question:28 %phone%refuse:33 %phone%staff:-110
%phone%wrong_one:-66 %place:-152 %place%refuse:28 %place%wrong_one:26 %question:-138 %question%refuse:-73
%question%staff:61 %question%start_again:44 %question%wrong_one:54 %refuse:-99 %refuse%shift_it:124 %refuse%staff:-33
%refuse%thanks:33 %refuse%wrong_one:-32 %season:-59 %shake:-101 %shift_it:-114 %shift_it%wrong_one:34
%smoke_smell:-82 %staff%who:54 %staff%wrong_one:32 %start_again:-94 %thanks:-134 %who:-49 %who%wrong_one:35
%wrong_one:-85 @?:239 @car:-35 @confirm:-29 @nothing:26 @odometer:80 @offers:-39 @reading:-213 @time:32 @times:-87
@walk_in_will_do:-33 ^_$:30 ^_a:25 ^_aceptan:82 ^_actually:42 ^_after:-27 ^_al:-25 ^_am:31 ^_and:-90 ^_anda:-25
^_ando:-34 ^_any:-41 ^_are:110 ^_asap:-27 ^_ayuda:-34 ^_ballpark:-60 ^_bonjour:74 ^_bring:-43 ^_cant:-52 ^_car:-59
^_cobran:-44 ^_con:-30 ^_confirmo:26 ^_congratulations:70 ^_cost:-42 ^_cuanto:82 ^_de:-110 ^_dejeme:-28 ^_did:139
^_do:-89 ^_does:48 ^_en:33 ^_eres:64 ^_es:-144 ^_eso:-28 ^_esta:-77 ^_estan:51 ^_friday:53 ^_get:-43 ^_go:-26
^_good:-32 ^_hablan:87 ^_hacen:56 ^_have:-30 ^_hay:-36 ^_hello:-71 ^_help:-31 ^_hey:165 ^_hi:38 ^_hm:127 ^_hmm:58
^_how:-43 ^_i:-138 ^_ill:-54 ^_info:-36 ^_is:120 ^_it:-57 ^_jajaja:45 ^_la:-96 ^_let:-28 ^_lo:-75 ^_lol:120 ^_los:33
^_manana:46 ^_mande:61 ^_mi:-32 ^_mijo:44 ^_mom:30 ^_my:-84 ^_neither:-28 ^_ni:-41 ^_nobody:-25 ^_not:-58 ^_olvide:37
^_on:-33 ^_out:39 ^_oye:56 ^_para:-65 ^_por:-33 ^_precio:-28 ^_price:-35 ^_puedo:-93 ^_que:101 ^_quien:-25
^_revoke:-30 ^_saturday:34 ^_should:31 ^_sip:-26 ^_sorry:41 ^_steering:-37 ^_still:-59 ^_su:129 ^_take:-36 ^_that:-47
^_the:-69 ^_there:-84 ^_tiene:-39 ^_tienen:59 ^_time:-34 ^_trabajan:57 ^_trae:-43 ^_venden:92 ^_voy:43 ^_want:27
^_we:-33 ^_wed:25 ^_what:38 ^_why:-103 ^_will:-55 ^_wipers:54 ^_y:-64 ^_ya:-29 ^_yep:29 ^_yo:-46 ^_you:-269 a:-36
a__can:56 a__card:38 a__casa:52 a__for:-36 a__hora:25 a__noise:-28 a__of:48 a__on:-52 a_bot:73 a_bus:44 a_charge:-36
a_cruise:32 a_day:44 a_gift:39 a_human:-57 a_meeting:50 a_que:30 a_real:25 a_robot:41 a_shuttle:34 about_the:28 ac:44
aceite:47 aceptan:170 aceptan_tarjeta:55 actually:41 address:-60 address_$:-64 after:-29 again:55 again_$:87
agendeme:-31 agendeme_$:-30 ahi:94 ahi_$:104 aire:77 aire_$:51 al:-61 algo:-33 alguien:26 alguien_que:25 all:-82
all_four:-25 all_set:-26 already:-52 also:80 also__you:25 also_do:25 am:51 am_$:-30 am__talking:33 amor:33 an:-48
and:-33 and__are:-84 and__i:28 and__there:42 and__you:129 and_can:74 and_do:96 and_is:65 and_the:-29 and_you:-79
anda:-52 ando:-47 anoche:33 anoche_$:41 antes:-59 antes_$:-27 antes_de:-28 any:-65 anymore:42 anymore_$:51
anything_$:55 app:42 appointment:-27 aqui_$:48 are:43 are_$:-74 are__a:78 are__again:53 are__guys:-50 are__on:-40
are__still:30 are_we:46 area:25 arm:-32 around:-27 arreglan:82 as:-37 asap:-30 aseguranza:44 asi:-103 asi_$:-66
at:-64 at_$:-39 at_all:76 auto:69 automated:34 automatica:26 away_from:46 ayuda:-36 ayuda_$:-31 back_$:38
ballpark:-62 ballpark_$:-60 be:35 be_a:28 be_the:26 be_there:-69 before:-26 before_$:35 best:-25 bici:31 bien:-67
bien_$:-55 bike:56 blocked:72 boat:30 bonjour:74 bonjour__ne:74 bonjour_je:74 bot:85 bot_$:62 brakes:-40 brand:49
bring:133 bring__own:48 bring_it:-39 bring_my:86 btw:25 bus:25 bus_stop:26 but__you:36 but_do:35 buy:32 by:-79
by__mall:-27 by_the:-55 cafe:28 call:-55 call_my:-60 can:136 can__bring:80 can__check:84 can__come:-46 can__do:-118
can__drop:57 can__me:-27 can__pick:28 can__send:63 can__speak:-33 can__talk:-38 can_do:-62 can_i:54 can_my:199
can_we:-50 can_you:96 cant_do:-32 car_$:-40 car__the:37 car_is:-49 card:49 cards:53 cards_$:53 carro:-97 carros:131
cars:42 cars_$:67 casa:79 casa_$:37 cash:50 cat:37 cerca:35 change__appointment:37 charge:-85 charge_$:-39
charge_for:-39 check_$:-34 check_my:57 cita:-80 cita_$:-48 claim:27 claim_$:27 clic:67 click:75 cobran:-57
cobran_por:-26 code:79 coffee:29 comadre:64 compran:48 comprends:56 comprends_pas:56 con:-49 con_mi:-35
con_ustedes:-48 congratulations:70 congratulations_you:53 cost:-54 cost_$:-46 could:49 could__be:53 couldnt:-28
covered:-25 cruise:32 cuanto__y:59 dan:184 day:-75 day_$:-84 days:-33 de_aqui:-27 de_espera:62 de_la:56 de_llantas:60
de_que:-47 de_una:-41 dejar:46 dejeme:-28 del:27 deposit:45 descuento:-79 dia:-93 dia_$:-60 did:173 did__get:27
did__leave:58 did_i:68 did_it:-28 did_my:55 did_you:89 digo:-41 dijo:28 dinner:63 direccion:-25 direccion_$:-29
directions:-40 dis:-29 dis_$:-29 do:98 do_$:-130 do__charge:-54 do__close:-50 do__do:98 do__get:-29 do__guys:120
do__have:79 do__keep:-33 do__know:-70 do__need:40 do__open:-72 do__own:-40 do__sell:74 do__shut:-28 do__take:124
do__use:32 do__work:41 do_friday:-39 do_i:-44 do_it:-86 do_my:-40 do_the:-45 do_you:467 does:61 does__matter:29
does_it:67 dog:78 dogs:41 donde:77 done_$:53 dont:-36 door:58 door_$:65 down:-38 down_$:-32 drive:-44 driving:101
driving_with:98 drop:87 drop__car:40 drop__off:42 drop_it:71 e:31 earlier:-36 early:-52 early_$:-38 eh:41 eh_$:42
el:28 el__a:-28 el__anoche:45 el__se:-36 el_aire:99 el_carro:-77 el_dia:-41 el_lunes:-30 el_martes:-34 el_recibo:66
email:62 empty:39 en:-38 en__momento:32 en__sala:49 en_el:-33 en_este:43 engine:-34 entendi:43 era:57 era_para:35
eres:56 eres__o:32 es:-101 es_$:57 es__un:25 es_de:-42 es_el:27 es_eso:-25 es_gratis:-45 es_una:54 es_urgente:-28
es_usted:28 es_y:44 esa:-26 escribo:72 espacio:-27 espanol:31 espera:61 espera_$:51 esperar:-61 esperar_$:-43
espero:-29 esta:-54 esta_bien:-28 estan_$:-27 este:42 este_momento:33 estimate:-27 esto_$:-36 estoy_bien:-26
estoy_de:-27 estoy_en:-35 estoy_manejando:108 ex:-31 factura:78 favor:-42 favor_$:-30 feels:-31 fell:47 fin:-25
fine:-30 finish:-43 first:-37 first_$:-26 fix:53 floor:25 for:-43 for_$:-30 for_the:30 foto:91 four:-36 four_$:-31
free:-49 free_$:-55 frenos:-58 frenos_$:-51 friday_$:-60 from:33 from_my:58 fue_el:44 fuga:-28 game:105 game_$:38
gano:46 garantia:50 get__a:-47 get_me:-33 get_my:-39 get_the:27 gift:67 gift_card:45 give:-30 give_me:-27 go:26
going:-37 going_on:-43 good:-31 gracias_$:-34 gratis:-50 gratis_$:-43 grua:70 grua_$:27 guys_$:-56 guys_do:88
guys_have:-25 guys_open:-30 guys_take:47 hablan:90 hablar:-34 hablar_con:-45 hace:-40 hacen:152 had:-34 hago:-26
hasta:-28 have__been:28 have__do:-29 have__shuttle:26 have__wrong:-35 have_a:73 have_anything:-27 have_loaners:32
have_my:-29 have_the:-45 have_to:-42 have_you:46 hay:90 hay__en:36 he:-31 hello:-71 help_$:-36 here:88 here_$:51
hey:165 hey__is:46 hi:34 hijo:30 hiring:101 hit:-27 hitch:39 hm:127 hmm:58 home:28 hora__y:30 horario:-26 how:-70
how__i:-38 how__you:-58 how_bad:26 how_do:-91 how_long:49 huh:52 huh_$:54 husband:-29 i__a:45 i__bring:-25 i__it:-29
i__my:86 i__need:-31 i__there:-32 i__to:129 i__you:-26 i_am:63 i_bring:73 i_can:-69 i_cant:68 i_come:-71 i_do:-55
i_drop:31 i_know:-77 i_leave:77 i_mean:36 i_need:130 i_pay:43 i_speak:-35 i_talk:-38 i_talking:33 id:-42 idea:38
idea_$:60 if_my:42 ill:-84 ill__there:-25 ill_be:-31 im__a:38 im__out:47 im__with:97 im_driving:100 im_in:27
im_not:-31 im_ready:-46 imagen:105 in_$:-43 in__waiting:27 in_a:69 in_my:-40 in_your:30 info:-60 info_$:-59 ingles:93
into:56 into_the:55 invoice:74 invoice_$:80 ir:43 ir_mi:30 is:88 is_$:41 is__a:68 is__car:115 is__free:-30
is__inspection:35 is__ok:41 is__really:-30 is__the:117 is__urgent:-30 is__wifi:145 is_a:-121 is_it:-57 is_making:-35
is_my:224 is_on:62 is_the:71 is_there:149 is_this:-44 is_your:27 it:-102 it__and:57 it__for:27 it__if:49 it__me:26
it__to:34 it__under:-25 it_a:-31 it_again:84 it_is:-36 it_matter:29 it_off:43 it_ok:45 it_urgent:-30 jaja:46
jaja_$:34 jajaja:52 je:158 je__comprends:56 je_ne:92 juego:52 just:-73 keep:-40 keep__me:-25 keep_texting:-26 key:62
key_$:30 knock:33 know:-98 know_you:-79 la__de:46 la__del:32 la__el:-35 la__es:25 la__o:34 la__ustedes:34 la__vez:30
la_casa:56 la_cita:-51 la_factura:80 la_garantia:34 la_llanta:-35 la_llave:27 la_luz:-33 la_pieza:29 la_revision:-27
la_sala:63 labor:-30 lady:28 laptop:26 laptop_$:26 las_$:-54 las_llantas:-26 las_llaves:28 last_night:31 late:-26
late_$:-26 later_$:29 le__a:-47 le_gusto:27 league:29 leave:73 leave_my:47 leave_the:29 left:-26 lentes:62 let:-30
let_me:-28 lets:-29 light:-56 light_is:-26 like:-67 like_a:-28 link:39 list:-47 list_$:-35 llanta:-38 llantas:84
llave:27 llaves:28 llego:33 llegue:26 llevar:109 llevar__mi:31 llevar_a:30 llevarlo_$:-28 llevo:-26 lo:-138 lo__a:-55
lo__la:39 lo__mi:-26 lo_puede:30 lo_puedo:-30 loaners:31 lobby_$:26 location:-84 location_$:-45 lol:149 lol_$:111
lol_no:41 long:28 long__you:34 los_ninos:-32 love:29 luego:36 luego_$:77 lugar:-34 luz:-40 machine:50 machine_$:52
mailbox:25 main:-34 making:-43 making_a:-27 mal:-31 mal_$:-33 mama:43 mama_$:35 manana_$:-42 mandan:109 mandar:28
mandarme:-25 mande:64 mande_$:65 manden:-36 mando:31 manejando:52 manejando_$:-36 maquina:60 marca:53 marcar:-26
martes:-28 martes_$:-30 mas:-66 mas_$:-39 mas_tarde:33 matter:25 may:33 me:-133 me_$:-57 me__el:95 me__mandar:39
me__marcar:-26 me__you:25 me_a:-55 me_again:-36 me_fue:37 me_i:27 me_mandan:97 me_off:-32 mean_$:37 meeting:46
mensaje:88 mensajes:-88 mensajes_$:-48 mes:-30 message:131 message_$:46 message__i:34 message_me:-39 message_when:34
messages:-47 messages_$:-30 mi:32 mi__con:25 mi_cita:-31 mi_hijo:34 mientras:29 mientras_$:28 mijo:36 mil:-53
millas:-29 mio:31 mis:44 mom:89 momento:28 monday_$:-35 more:-55 morning:-25 motorcycles:35 motorcycles_$:35 much:-26
mucho:-57 must:-34 muy:-81 my:75 my__done:64 my__drop:81 my__fell:55 my__go:58 my__in:28 my__key:27 my__oil:26
my__one:31 my__says:-42 my__there:57 my__too:96 my__will:-30 my_arm:-28 my_car:31 my_dog:60 my_husband:-27
my_invoice:43 my_number:-65 my_own:31 my_phone:42 my_son:37 my_spare:32 my_sunglasses:56 my_warranty:26 my_wife:-26
nada:-35 name:-32 nao:94 ne:92 ne__pas:92 ne_comprends:56 need__bring:93 need__change:45 need_a:-26 need_that:-51
need_to:144 neither:-28 ni:-90 night:91 night_$:52 ninos:27 ninos_$:41 no_$:-54 no__at:76 no__here:-39 no_estoy:43
no_gracias:37 no_idea:73 no_lo:36 no_noise:77 no_pero:39 no_se:32 no_thanks:38 nobody:-40 noise_$:-40 noise__all:78
noise_at:78 nomas:-48 non:33 north:-31 not:-51 not__me:-46 not_be:56 now:-64 now_$:-49 number:-48 number_$:-58 o:116
o__es:30 o_no:41 o_que:25 obrigado:68 ocupo:26 of:27 of__do:63 of_my:44 of_oil:49 of_the:37 of_you:-30 off_the:44
off_your:-26 office:83 office_$:29 oi:34 oil:60 oil_$:41 ok:37 ok__my:40 ok__the:26 ok_if:51 old:33 olvide:37 on:-35
on_$:-33 on__th:65 on__the:47 on_for:42 on_it:36 on_my:-48 on_the:-33 open:-143 otra:25 otro:-27 out:27 out_$:-30
out__the:52 out_of:56 over:-25 own:25 own_oil:26 oye:75 pa:37 pagar:40 pagos:36 papel:26 papel_$:26 paperwork:46
paperwork_$:46 para_cuando:-36 parking:34 part:30 partes:67 partes_$:60 partido:94 parts:29 pas:117 pas_$:46 pay:38
perdon:26 person_$:-40 peso:25 phone:33 phone_$:53 pickup:-36 picture:34 pieza:38 place:27 please_$:-55 pm_$:-35
podria:26 ponen:69 por:-81 por_favor:-33 precio:-60 precio_$:-47 prefiero:-26 prestan:48 price:-120 price_$:-39
puede:31 puede_$:-51 puede__mi:88 puede_esperar:-47 puede_ir:38 pueden_mandar:34 puedo__a:30 puedo_llevar:72
puedo_seguir:-66 put_on:36 q:42 que_$:224 que__de:56 que__eso:-30 que_es:-48 que_hora:26 que_le:-44 que_tiene:-34
quick:-38 quick_$:-40 quien:30 quien__el:38 quien_es:-37 quien_me:33 quienes:-35 quienes_son:-35 quote:-36 radio:29
rapido:-26 ready:44 ready_$:62 real_person:26 really:-132 recibo:87 recoger:-25 red:29 rent:36 replaced:-38 reply:76
report:39 respondo:75 respuesta:25 respuesta_automatica:26 revisan:106 revision:-28 revoke:-30 revoke_$:-25 right:59
right_now:69 ring:-53 ring_me:-37 robot:126 robot_$:101 room:25 room_$:51 sabado_$:-26 saben:51 sala:121 sala_$:27
sala_de:68 sale:30 same:-43 same_day:-60 sat:-26 says:-59 schedule:-32 se:-90 se__fue:36 se_lo:-38 se_me:39 see:50
see__message:38 see_the:38 see_your:38 seguir:-56 selected:27 selected__a:27 selected_for:27 sell:83 sell_used:39
semana:-31 send:80 set:-46 shop:-71 should_i:31 shut:-30 shuttle:40 shuttle_$:33 si:-42 si_$:-25 si_llego:28
si_lo:-37 si_pero:-39 si_puedo:26 side:-56 side_$:-44 sigo:-30 siguen__el:-25 siguen_en:-26 silla:31 silla_de:31
sip:-26 sip_$:-26 sirve:33 slot:-26 snow:77 so:-85 sold:-29 son:-68 son_$:-53 son__it:52 sorry:32 sorry_i:76 soy:-39
spare:32 speak:-50 speak_to:-29 spring:-33 spring_$:-25 squeaking:52 st_$:-33 station:27 steering:-40 still:35
still__the:-34 still_good:25 stop:-44 street_$:-30 su:195 sunday:-25 sunglasses:56 supposed:31 supposed_to:31 t:-31
take:41 take__off:-44 take_checks:25 take_me:-33 talk__a:-44 talk_to:-57 talking:31 talking_to:33 taller:-33
tambien:140 tambien_$:78 tan:-33 tarjeta:86 tarjeta_de:33 tax:-29 te:124 te__luego:76 te_escribo:78 tech:-37
tell_me:-27 temprano:-25 texting:-39 texting_me:-29 textos:-32 texts:-26 thank:-48 thank_you:-46 thanks:28
thanks__you:31 that:-50 that_$:-88 that_is:-46 that_you:25 the_$:30 the__before:42 the__do:30 the__last:42
the__off:30 the__on:43 the__room:31 the__side:-45 the__that:35 the__with:45 the_address:-29 the_door:67 the_game:100
the_invoice:29 the_messages:-25 the_new:26 the_night:34 the_north:-27 the_office:51 the_part:31 the_truck:-33
the_trunk:40 the_waiting:44 the_wrong:-42 them_$:-26 then:-30 there:36 there_$:43 there__a:-53 there__charge:-37
there__to:47 there_a:48 there_is:-95 these:-47 think:-33 this:-78 this_$:-29 this_a:80 this_is:-30 through:36
through_$:56 thurs:-37 thursday_$:-27 tiene:-114 tienen:132 tienen_$:-43 tienen__de:85 tienen__el:-50 tienen__para:44
tienen_lugar:-45 tienen_wifi:50 time:-27 time_$:-52 time__it:85 time__you:-78 time_do:-76 time_is:58 tire:-45
tires_$:-32 to:-44 to_$:-29 to__anything:75 to__it:-36 to__the:41 to_a:-26 to_be:62 to_bring:89 to_change:40
to_claim:28 to_do:-27 to_drive:-39 to_the:-32 todavia:34 today:-54 today_$:-38 todo:-53 todo_el:-29 toma:-26
tomorrow_$:-40 too:50 too_$:120 tortillas:67 tow:85 tow_$:43 tow_hitch:26 trabajan:78 trae:-29 trailer:52 trip:78
truck:-46 trunk:40 trunk_$:40 tu:51 turned:56 twice:-26 two:-31 typing:31 uh:-26 un_robot:46 una:69 una__o:40
una_maquina:57 under:-38 under_my:-26 up:-102 up_$:-33 urgent_$:-29 urgente:-31 usadas:56 use:54 used:54 used_cars:36
ustedes:55 ustedes_$:-93 venden:175 vendi:-36 vez:46 vez_$:36 vidrios:45 viene:-25 viernes_$:-62 voy_a:-52
voy_manejando:42 wait:-37 wait_$:-25 waiting:38 waiting_room:45 walk:31 want:36 warranty:35 warranty_$:-25 was:61
was__again:85 was_it:83 was_that:54 way:-25 we_do:-35 well:25 well_$:28 went:-30 were:-44 what_$:77 what__do:-63
what__is:29 what__this:-30 what__was:115 what__you:-158 what_a:25 what_did:-57 what_do:-89 what_time:110 wheel:-35
when__you:-34 when_do:-51 where__you:-33 where_are:-33 where_is:30 while:30 who__the:109 who__this:-42 who__you:-58
who_are:-56 who_dis:-29 who_is:-32 why:-114 why_$:-41 why__you:-65 why_do:-81 wife:-45 wife_$:-32 wife__it:31
wifi:243 wifi_$:131 will__it:-51 will_bring:-37 will_do:-48 will_you:33 window:75 wipers:57 with_me:28 won:113
work:-41 work_$:-30 work_on:57 working:30 would:-28 wrong:-48 wrong_person:-32 y:42 y_$:-26 y__es:-27 y_el:-37
y_tambien:25 y_tienen:38 ya:-71 ya_$:-27 ya__mi:71 ya_esta:44 ya_no:-34 yep:39 yep__you:27 yes_$:-47 yes__you:63
yes_do:63 yes_i:-35 yo:-36 you:117 you_$:-121 you__a:175 you__anything:-28 you__before:-29 you__bot:45 you__checks:26
you__do:90 you__fix:33 you__for:-49 you__have:-31 you__in:37 you__is:27 you__it:-26 you__loaners:27 you__me:-72
you__my:-56 you__on:79 you__open:-36 you__take:43 you__text:-26 you__the:97 you__today:-29 you__used:54 you_a:90
you_are:-70 you_call:-67 you_can:-62 you_charge:-55 you_check:84 you_close:-52 you_do:62 you_got:36 you_have:61
you_keep:-33 you_need:-55 you_on:-45 you_open:-96 you_pick:28 you_put:54 you_see:54 you_sell:83 you_send:81
you_shut:-29 you_take:98 you_tell:-26 you_text:34 you_then:-25 you_there:35 you_use:36 you_work:41 your:79
your__is:61 your__when:34 your_message:43 youre:-37
"""
