"""What speaks for and against `unclear`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "unclear"
BIAS = -54
WEIGHTS = """\
#aben:48 #abla:51 #able:-27 #ablo:-19 #abor:-25 #acac:-25 #acce:32 #aced:-24 #acei:28 #acen:101 #acep:96 #acer:-18
#achi:47 #acio:21 #acti:-19 #actl:-20 #actu:123 #adas:44 #addr:-39 #adel:-20 #adie:-18 #adio:20 #ador:90 #adre:20
#afte:-21 #afue:23 #agai:55 #agen:18 #ages:-34 #agos:20 #agua:-43 #ague:39 #aile:48 #aint:21 #aire:58 #aiti:40
#ajaj:72 #ajan:26 #ajes:-64 #aken:-18 #akes:-46 #alan:23 #alar:20 #aler:-20 #ales:-19 #algo:-28 #alia:32 #alin:39
#alki:24 #alle:-41 #allp:-41 #ally:-39 #almo:-18 #alre:-43 #alri:-23 #also:44 #alud:-29 #amat:40 #amen:-25 #amos:-42
#anas:58 #ance:-40 #anda:37 #ande:23 #ando:-73 #anej:54 #aner:29 #anks:26 #anne:-21 #anoc:19 #anol:18 #anos:42
#ansm:25 #ante:-23 #anty:33 #anym:39 #apar:-18 #aper:31 #appe:-20 #appo:-25 #appy:-21 #apto:25 #apun:-24 #aqui:64
#arda:-25 #ards:38 #area:28 #aren:-33 #arge:-50 #aria:-26 #arje:58 #arle:44 #arli:-28 #arlo:26 #arly:-33 #arme:-59
#aron:-57 #arou:-24 #arra:32 #arre:34 #arse:23 #arte:24 #arti:88 #arts:38 #asap:-42 #asse:39 #asta:-21 #aste:50
#atan:61 #atch:-63 #ater:24 #atic:67 #atis:-35 #ativ:-38 #ator:-37 #atra:-18 #atul:51 #atur:20 #auto:143 #avin:-25
#avis:-21 #baja:34 #ball:-44 #band:-20 #bano:63 #bath:18 #been:-22 #bend:-24 #best:-21 #bett:-19 #biar:-22 #bici:55
#bien:39 #bike:28 #blan:73 #bles:-35 #blig:-22 #bloc:53 #body:-27 #borr:-27 #both:-21 #brak:-40 #brig:65 #brin:93
#bscr:-29 #buzo:27 #caci:-22 #cade:35 #call:-49 #camb:-62 #came:-58 #canc:-25 #card:68 #care:-21 #carr:19 #cars:46
#casa:39 #cati:-53 #ceit:28 #cele:-18 #cell:-19 #cept:103 #cerc:25 #chai:33 #chan:-20 #char:-60 #ched:-23 #chem:-29
#chin:22 #chis:23 #cial:-35 #cibo:61 #cita:-60 #cked:81 #cket:21 #ckin:-34 #clam:19 #clea:25 #cles:33 #clic:95
#clos:-32 #cobr:-50 #coff:19 #coma:29 #come:-28 #como:18 #comp:68 #cond:23 #cong:67 #cons:-24 #cont:30 #corn:22
#cost:-51 #coul:22 #coun:-19 #crui:27 #cted:23 #ctic:28 #ctio:-25 #ctiv:-27 #ctly:-20 #ctri:35 #ctua:46 #ctur:86
#cual:-21 #cuan:29 #cuar:-21 #cuen:-54 #cupo:23 #curr:53 #cycl:54 #dame:-24 #darm:-18 #dash:-22 #days:-38 #ddre:-39
#deal:-22 #deci:-20 #deja:30 #deje:-62 #dele:-40 #deli:50 #deme:-39 #dena:22 #dent:18 #desc:-64 #desp:-22 #deta:30
#dies:25 #diff:-18 #digo:74 #dijo:38 #dire:-53 #dist:68 #dito:117 #does:24 #domi:-38 #dont:-20 #door:43 #dora:32
#down:-58 #dres:-51 #driv:38 #drop:94 #dule:-30 #eaci:44 #eaki:28 #eall:-91 #earl:-64 #earn:24 #ease:-54 #eave:31
#ecar:27 #eces:-66 #echi:-25 #ecia:-58 #ecib:66 #ecio:-50 #ecla:20 #econ:-20 #ecte:23 #ectr:35 #edes:23 #edul:-30
#eels:-22 #eeri:-26 #eeti:45 #efec:18 #egat:-23 #egla:59 #egue:29 #egui:-59 #egur:24 #eite:28 #eith:-34 #ejan:77
#ejar:31 #ejem:-29 #ejor:-19 #elan:-22 #elec:59 #eliv:53 #eliz:-24 #ello:-66 #emai:37 #eman:-20 #emov:-18 #empr:-31
#empt:28 #enco:-21 #enda:-27 #ende:92 #endi:-42 #endr:-18 #ends:35 #enen:115 #enes:-21 #engi:-24 #enme:-63 #enos:-35
#ente:21 #enti:-31 #entl:51 #ento:-38 #ents:31 #epla:-27 #eply:69 #epta:94 #eran:-19 #erar:-52 #erca:25 #erde:-24
#ered:30 #eren:-39 #eres:30 #eria:22 #erin:-34 #erio:-22 #erne:-36 #eros:20 #erso:21 #erst:19 #erti:48 #erwo:46
#escr:51 #escu:-57 #esda:-24 #espa:18 #espe:-23 #espo:31 #essa:33 #esta:65 #esto:-33 #eter:-29 #etin:43 #ette:-22
#evar:77 #even:-19 #ever:-73 #evis:33 #evok:-26 #eway:-18 #exac:-25 #exam:58 #expl:-19 #exti:-30 #exto:-23 #exts:-28
#fact:89 #feel:-29 #fell:36 #fere:-19 #ffee:19 #ffic:66 #ffle:35 #fice:73 #fier:-24 #filt:-33 #fina:26 #fini:-40
#firs:-23 #floo:20 #fore:-23 #four:-39 #free:-46 #fren:-68 #from:29 #fter:-21 #fuga:-25 #gado:85 #gain:55 #gale:-34
#game:82 #gana:63 #gano:25 #gati:-23 #gato:30 #genc:19 #gend:-59 #ghts:-20 #gine:-25 #ging:-21 #give:-25 #glan:60
#glas:47 #gles:84 #goin:-52 #gone:-26 #good:-23 #grab:29 #grad:-22 #grat:26 #grav:-20 #grea:-24 #gual:-22 #guar:30
#gura:31 #guys:-24 #habl:32 #hace:69 #haga:-21 #haha:63 #hair:34 #hanc:-33 #happ:-27 #harg:-58 #have:-32 #head:-32
#heca:26 #hedu:-30 #hell:-58 #help:-22 #here:92 #hese:-28 #hich:-24 #hiel:32 #hijo:35 #hile:21 #hina:-24 #hine:38
#hing:-23 #hitc:44 #hoco:18 #hole:-19 #home:49 #hora:-28 #hour:-32 #hous:-21 #hrou:39 #humb:-18 #hurs:-29 #husb:-20
#hutt:26 #iado:19 #ibir:-31 #icos:46 #idea:38 #ieja:19 #ield:26 #iemp:-27 #iere:-19 #iern:-23 #iero:-23 #iffe:-18
#ific:21 #ight:-27 #igua:-26 #ilen:23 #iler:36 #iles:-19 #illa:45 #imag:135 #imos:-19 #impi:47 #indi:19 #indo:83
#inea:40 #ines:19 #info:-51 #ingl:69 #ingo:-36 #ingu:-19 #inis:-38 #inne:54 #inos:23 #insp:24 #intm:-23 #into:44
#invo:74 #iona:24 #ione:45 #ions:63 #ious:-32 #iper:66 #ippe:-27 #iran:-22 #irec:-53 #irst:-23 #isan:85 #isar:-25
#isit:-20 #ismo:-18 #issi:-19 #ista:-22 #iste:52 #itch:31 #ithe:-34 #itin:35 #itte:30 #ittl:20 #iver:41 #ivin:66
#jaja:183 #jeje:42 #jeme:-27 #jeta:58 #jueg:68 #just:-53 #keep:-27 #king:-25 #knoc:29 #know:-68 #labo:-25 #lace:-25
#lain:-22 #lass:34 #late:-22 #lati:46 #lave:37 #leas:-42 #leav:18 #lect:59 #legu:33 #lenc:23 #lent:33 #lers:18
#less:-32 #lets:-19 #leva:67 #libr:21 #lick:33 #lien:-31 #lier:-27 #ligh:-52 #like:-44 #limp:40 #line:22 #ling:-20
#link:39 #list:-55 #litt:20 #live:34 #lkin:24 #llam:-56 #llan:34 #llas:36 #llav:37 #lleg:27 #ller:-26 #llev:59
#llpa:-41 #loan:34 #loca:-59 #lock:56 #loor:24 #lose:-38 #love:27 #lpar:-41 #lrea:-43 #lrig:-23 #ludo:-20 #lueg:28
#luga:-51 #lvid:33 #mach:39 #madr:24 #mage:119 #mail:53 #main:-24 #maki:-25 #mana:-40 #mand:92 #mane:39 #maqu:47
#mart:-25 #mati:56 #matt:20 #mbia:-37 #mbie:59 #mbre:25 #mean:21 #meet:44 #mejo:-19 #mess:51 #mewh:21 #migh:-28
#mijo:25 #mile:-31 #mili:-19 #mill:-26 #mind:-24 #ming:-34 #misi:30 #mism:-19 #miss:-24 #moni:35 #morn:-21 #moto:61
#move:-31 #mpan:-27 #mpia:47 #mple:44 #mpra:26 #mpty:29 #mput:26 #much:-54 #must:-22 #nada:-18 #nadi:-18 #nado:20
#name:-47 #nanc:21 #nced:22 #ncel:-38 #nces:-27 #ncon:-24 #ndam:-19 #ndan:100 #ndar:-26 #nday:-25 #ndem:-30 #nden:96
#nder:-40 #ndin:-19 #ndow:84 #neac:44 #nece:-52 #nega:-23 #neit:-21 #neja:67 #next:-26 #ngan:-19 #ngin:-30 #ngla:104
#ngle:69 #ngra:61 #nigh:42 #ning:-44 #nino:37 #nish:-40 #nito:28 #nner:33 #nobo:-30 #nock:29 #noma:-30 #none:-21
#nort:-42 #noth:-21 #noti:27 #nsmi:25 #nsor:19 #nspe:24 #nsto:-18 #ntas:58 #nter:-35 #ntes:39 #ntly:51 #ntme:-23
#ntra:42 #nuev:-33 #numb:-37 #nvoi:75 #nymo:39 #oane:34 #obli:-22 #obod:-30 #obot:73 #obra:-50 #obri:44 #ocat:-71
#ocke:66 #ocup:29 #oday:-31 #offe:35 #offi:73 #oger:-18 #oice:101 #oiga:27 #oing:-46 #oint:-34 #olvi:31 #omas:-31
#omat:88 #omet:-30 #omew:20 #omin:-27 #ompl:-19 #ompr:65 #ompu:24 #ondi:25 #ondo:55 #oner:-18 #ongr:61 #onit:30
#onjo:88 #onta:-21 #ontr:55 #oone:-22 #open:-100 #orar:-21 #orcy:31 #ores:43 #orio:-26 #orma:-31 #orne:22 #orni:-22
#orra:21 #orre:-37 #orry:18 #orse:-19 #orte:-24 #orth:-46 #orti:52 #oses:27 #otal:-28 #otif:23 #ound:-42 #ount:-24
#oure:-24 #ours:-31 #ousl:-19 #oved:36 #over:-76 #owed:23 #pack:53 #paga:19 #pago:19 #pano:18 #pape:43 #park:-36
#part:171 #pasa:-37 #pass:26 #past:-18 #peak:-43 #peci:-43 #pera:-20 #pers:98 #perw:46 #pick:31 #pita:-19 #plac:-39
#plai:-21 #plea:-29 #poin:-32 #pond:50 #pons:28 #posa:-24 #pped:-43 #ppoi:-25 #prac:28 #pran:19 #prec:-40 #pref:-20
#pren:29 #pres:20 #pric:-89 #prin:-21 #ptan:109 #puer:25 #punt:-27 #quea:29 #qued:-23 #quem:-19 #quen:-18 #quic:-28
#quie:-43 #quin:40 #quit:-32 #quot:-24 #raba:49 #rack:19 #ract:26 #rade:-33 #rado:-25 #raff:31 #rail:43 #rain:-45
#rake:-40 #rame:-49 #rand:37 #rano:-23 #rant:46 #rari:-22 #raro:-37 #rata:42 #rati:-41 #rato:-31 #ratu:47 #rave:-20
#rcar:-23 #rcyc:31 #rdon:25 #reac:-35 #read:22 #real:-85 #reca:-24 #recc:-19 #rece:22 #rect:-37 #reet:-24 #rega:24
#regl:57 #remi:50 #rend:25 #reno:-48 #rent:72 #repl:57 #rese:-27 #resp:73 #ress:-54 #resu:-25 #reve:-20 #revi:44
#revo:-27 #ribe:-27 #ribi:-29 #ribl:-20 #ribo:70 #rice:-90 #righ:25 #rinc:-19 #ring:68 #riou:-29 #ripp:-27 #rive:-37
#rivi:85 #rjet:58 #rkin:28 #rlie:-28 #rmac:-19 #rned:48 #rner:22 #rnes:-34 #rnin:-26 #robo:72 #rong:-50 #room:66
#rose:26 #roun:-29 #rran:35 #rreg:44 #rren:41 #rrib:-22 #rros:65 #rson:21 #rted:-21 #rtes:42 #rtil:56 #ruck:-34
#ruis:27 #runk:26 #rvic:20 #rwor:46 #sabe:65 #saca:-39 #sada:47 #sage:76 #sala:114 #salu:-29 #same:-34 #saqu:-19
#sary:-26 #says:-38 #sban:-20 #sche:-30 #scou:-19 #scue:-51 #sday:-30 #seco:-20 #segu:-45 #self:-20 #sell:84
#sema:-18 #semo:22 #send:40 #seri:-40 #shop:-57 #sibl:-23 #side:-38 #sign:-18 #sigo:-26 #sile:23 #sing:-20 #slip:-18
#smis:25 #snow:56 #sold:-31 #soon:-29 #sorr:20 #spam:-22 #span:35 #spar:23 #spea:-43 #spec:-20 #spit:-18 #spon:98
#spos:-30 #sque:26 #ssag:59 #ssed:-22 #sses:44 #ssin:-19 #stan:70 #star:-60 #stat:26 #stee:-26 #stic:-20 #stil:19
#stim:-26 #stin:21 #stop:-74 #stre:-30 #stri:-29 #subs:-29 #suen:-20 #sund:-18 #supp:23 #tach:19 #tado:24 #tail:34
#talk:39 #tall:-31 #tamb:70 #tant:-24 #tard:-23 #tarj:58 #tart:-30 #tati:31 #tech:-18 #tede:23 #teer:-26 #tele:-19
#tely:-19 #temp:-30 #tend:36 #teng:-23 #teni:23 #tera:-31 #teri:20 #teve:-27 #text:-60 #than:-34 #that:-97 #them:-21
#then:-37 #ther:-24 #thes:-28 #thin:-37 #this:-59 #thro:54 #thum:-24 #tice:32 #tico:38 #tido:73 #tiem:-23 #tien:21
#tifi:47 #till:62 #tima:-29 #time:-43 #ting:28 #tion:-30 #tire:-25 #tive:-43 #tmen:-23 #toda:-40 #todo:-26 #toma:88
#took:-22 #topa:-19 #torc:31 #tore:29 #tori:-29 #tort:56 #tory:23 #tota:-28 #trab:32 #trad:-21 #trae:19 #trai:25
#trar:-22 #trat:47 #tree:-26 #tric:35 #trip:46 #truc:-38 #trun:26 #tter:-18 #ttle:41 #tual:45 #tues:-19 #tula:51
#tura:101 #turn:39 #typi:19 #uall:45 #uard:30 #uare:-19 #ubsc:-29 #ucho:-43 #udos:-20 #ueak:34 #uego:93 #uena:-39
#uenm:-18 #uent:-56 #uera:18 #ueva:-25 #ugar:-51 #ught:-20 #uick:-28 #uier:-26 #uina:42 #uise:27 #ulat:51 #umbe:-37
#umbs:-18 #umer:-18 #unda:-22 #unde:-34 #unst:-18 #unta:-27 #uote:-24 #uran:40 #urge:-19 #urne:48 #urre:52 #usad:59
#usan:61 #usba:-20 #used:40 #usly:-19 #usta:-20 #uste:24 #utom:89 #uttl:26 #uzon:27 #vaca:-28 #vend:118 #veng:26
#vere:27 #very:-22 #vibr:-25 #vice:20 #vida:22 #vide:20 #vien:-22 #ving:29 #visa:54 #visi:-43 #viso:-22 #voic:102
#voke:-26 #vuel:-30 #ward:-19 #warr:33 #week:-40 #well:28 #went:-29 #were:-30 #when:-36 #whic:-23 #whil:21 #wife:-32
#wifi:192 #wind:100 #wipe:52 #wire:-18 #word:57 #work:32 #worn:-22 #wors:-20 #woul:-21 #wron:-50 #xact:-25 #xtin:-30
#xtos:-21 #ycle:46 #yeah:-18 #ymor:39 #your:30 #ypin:19 %again_later:-118 %again_later%busy:27 %again_later%car:-26
%again_later%car_part:32 %again_later%do_it:-25 %again_later%family:-35 %again_later%how_long:21
%again_later%lift:-50 %again_later%money:-22 %again_later%noise:36 %again_later%on_way:31 %again_later%pay_day:-54
%again_later%phone:38 %again_later%place:-22 %again_later%question:20 %again_later%refuse:-28 %again_later%season:-19
%again_later%staff:33 %again_later%start_again:72 %agree:-105 %agree%bring:41 %agree%call_off:72 %agree%car:57
%agree%car_part:24 %agree%how_long:42 %agree%lift:79 %agree%message:-28 %agree%money:83 %agree%noise:-36
%agree%pay_day:60 %agree%question:-58 %agree%shift_it:-23 %agree%thanks:-18 %away:-52 %away%bring:-20 %away%car:30
%away%message:25 %away%on_way:-18 %away%phone:37 %away%staff:81 %bad:-181 %bad%car_part:-21 %bad%do_it:-29
%bad%staff:-44 %bring:-49 %bring%busy:-35 %bring%call_off:63 %bring%car_part:18 %bring%elsewhere:48 %bring%family:66
%bring%leave_me:-38 %bring%message:-19 %bring%odometer:29 %bring%opening:27 %bring%question:-31 %bring%refuse:46
%bring%season:30 %bring%shift_it:73 %bring%staff:-23 %bring%who:32 %bring%wrong_one:22 %busy:-65 %busy%call_off:36
%busy%phone:39 %busy%question:49 %busy%shift_it:29 %busy%who:18 %call_off:-38 %call_off%car:49 %call_off%do_it:-52
%call_off%fails:45 %call_off%gone_car:-33 %call_off%machine:24 %call_off%money:31 %call_off%noise:32
%call_off%odometer:87 %call_off%on_way:-50 %call_off%phone:46 %call_off%refuse:-35 %call_off%staff:-27
%call_off%start_again:-50 %call_off%thanks:39 %call_off%who:38 %car:-28 %car%car_part:-51 %car%do_it:24
%car%family:-51 %car%message:18 %car%noise:-50 %car%odometer:23 %car%phone:40 %car%place:24 %car%question:37
%car%refuse:-40 %car%shift_it:-54 %car%staff:82 %car_part:-48 %car_part%do_it:-30 %car_part%fails:-77
%car_part%leak:-36 %car_part%noise:-36 %car_part%odometer:-34 %car_part%on_way:-40 %car_part%pay_day:54
%car_part%phone:67 %car_part%place:-28 %car_part%question:40 %car_part%season:41 %car_part%shake:-28
%car_part%smoke_smell:-28 %car_part%staff:34 %car_part%start_again:39 %do_it:-69 %do_it%elsewhere:-28
%do_it%family:-53 %do_it%leave_me:39 %do_it%money:59 %do_it%odometer:-32 %do_it%on_way:35 %do_it%question:-46
%do_it%refuse:43 %do_it%season:43 %do_it%staff:60 %do_it%thanks:24 %do_it%wrong_one:-27 %doubt:-49 %doubt%lift:21
%doubt%wrong_one:-18 %elsewhere:-95 %elsewhere%family:-29 %elsewhere%money:33 %elsewhere%place:-25
%elsewhere%question:-29 %elsewhere%staff:-27 %elsewhere%who:41 %fails:-61 %fails%gone_car:29 %fails%odometer:-20
%fails%question:41 %fails%who:24 %family:64 %family%message:46 %family%money:18 %family%on_way:-18 %family%phone:-32
%family%place:23 %family%question:79 %family%shift_it:70 %family%start_again:22 %family%who:-35 %gone_car:-52
%gone_car%money:-24 %gone_car%question:34 %gone_car%refuse:48 %gone_car%wrong_one:21 %how_long:-143 %how_long%lift:24
%how_long%opening:-24 %how_long%question:18 %how_long%refuse:-18 %how_long%shift_it:-22 %how_long%start_again:25
%leak:-92 %leave_me:-76 %leave_me%odometer:-21 %leave_me%on_way:57 %leave_me%opening:29 %leave_me%question:24
%lift:82 %lift%on_way:-18 %lift%opening:21 %lift%start_again:22 %machine:276 %machine%message:36 %machine%phone:-21
%machine%question:40 %machine%staff:27 %meaning:-119 %meaning%question:-33 %message%money:79 %message%phone:31
%message%refuse:-32 %message%shift_it:32 %message%start_again:-85 %message%who:-22 %money:-135 %money%on_way:-57
%money%refuse:-23 %money%staff:18 %money%who:60 %noise:-23 %noise%odometer:-26 %noise%question:-37 %noise%refuse:37
%noise%start_again:40 %odometer%on_way:43 %odometer%question:-21 %odometer%refuse:-20 %odometer%shift_it:-29
%odometer%staff:-26 %odometer%who:29 %on_way:-53 %on_way%opening:42 %on_way%place:37 %on_way%question:28
%on_way%refuse:-45 %on_way%shift_it:-27 %opening:-216 %opening%question:-40 %opening%staff:-33 %pay_day:-22
%pay_day%season:-20 %phone:-97 %phone%refuse:22 %phone%shift_it:29 %phone%staff:-44 %phone%start_again:19
%phone%wrong_one:-51 %place:-137 %place%question:-27 %place%staff:-30 %question:-120 %question%refuse:-31
%question%shift_it:-19 %question%staff:71 %question%start_again:50 %question%who:-45 %refuse:-92 %refuse%shift_it:90
%refuse%staff:-51 %refuse%wrong_one:-31 %season:-29 %shake:-75 %shift_it:-87 %shift_it%staff:19 %smoke_smell:-76
%staff:24 %staff%who:44 %start_again:-109 %thanks:-127 %who:-53 %wrong_one:-120 @?:159 @after_visit:-34 @car:-63
@confirm:-51 @later:-46 @odometer:66 @offers:-32 @offers_:-22 @reading:-174 @time_:-18 @times:-93 @walk_in:-47 ^_$:37
^_about:29 ^_after:-27 ^_ahora:-18 ^_am:25 ^_and:-57 ^_anda:-22 ^_ando:-25 ^_any:-34 ^_aqui:-18 ^_are:100 ^_at:-18
^_ayuda:-28 ^_ballpark:-40 ^_been:-23 ^_buen:-18 ^_cant:-57 ^_car:-42 ^_como:37 ^_con:-22 ^_congratulations:51
^_cost:-23 ^_cuanto:35 ^_de:-71 ^_dejeme:-27 ^_did:127 ^_do:-39 ^_el:-62 ^_en:22 ^_eres:37 ^_es:-95 ^_ese:-19
^_eso:-24 ^_esta:-70 ^_estan:53 ^_estoy:20 ^_feliz:-24 ^_friday:34 ^_get:-34 ^_go:-28 ^_good:-30 ^_have:-24
^_hello:-57 ^_help:-31 ^_hey:160 ^_hi:49 ^_hm:103 ^_hmm:65 ^_how:-33 ^_i:-90 ^_id:-24 ^_ill:-51 ^_info:-33 ^_is:141
^_it:-37 ^_la:-61 ^_las:-19 ^_let:-18 ^_lo:-36 ^_lol:93 ^_los:35 ^_mande:56 ^_me:26 ^_might:-28 ^_my:-65 ^_need:-23
^_neither:-21 ^_ni:-41 ^_no:-18 ^_nobody:-24 ^_not:-46 ^_olvide:37 ^_on:-22 ^_option:-18 ^_para:-49 ^_please:-22
^_por:-32 ^_precio:-21 ^_price:-20 ^_puedo:-70 ^_que:68 ^_revoke:-26 ^_saturday:35 ^_son:-19 ^_sorry:46
^_steering:-21 ^_still:-39 ^_su:119 ^_take:-34 ^_that:-20 ^_the:-33 ^_there:-59 ^_thursday:19 ^_tiene:-34 ^_tienen:55
^_tire:-19 ^_trabajan:61 ^_trae:-25 ^_un:-23 ^_voy:31 ^_we:-19 ^_were:-24 ^_where:-25 ^_why:-66 ^_will:-24 ^_ya:-22
^_yep:25 ^_yes:-28 ^_yo:-32 ^_you:-185 ^_youre:-18 a:-36 a__can:48 a__for:-37 a__from:29 a__noise:-24 a__of:22
a__on:-43 a__person:24 a_bot:66 a_cruise:27 a_human:-38 a_real:24 a_robot:31 a_shuttle:29 abajo:-22 about_$:-18
about_the:42 ac:36 aceite:31 aceptan:102 actually:46 address:-39 address_$:-43 after:-18 after_i:-18 again:55
again_$:73 agendeme:-28 agua:-20 ahi:70 ahi_$:81 ahora_$:24 aire:58 aire_$:42 al:-54 algo:-21 alineacion:19 all:-66
all_set:-25 already:-43 already_$:-18 also:44 am:41 am_$:-23 am__talking:29 amor:18 an:-39 and:-63 and__are:-56
and__is:-18 and__my:21 and__you:64 and_can:45 and_do:40 and_you:-55 anda:-36 ando:-30 anoche:19 anoche_$:25 antes:-19
any:-78 anymore:39 anymore_$:41 anything_$:61 appointment:-21 aqui_$:31 aqui_no:-19 are:42 are_$:-60 are__a:76
are__guys:-41 are__on:-41 are__still:30 are_we:42 area:31 around:-20 arreglan:60 as:-43 as_i:27 asap:-42 asi:-54
asi_$:-44 at:-26 at__you:27 at_all:66 at_is:24 at_k:-19 auto:61 away_$:-24 ayuda:-29 ayuda_$:-26 back_$:31
ballpark:-41 ballpark_$:-40 bateria:-29 bateria_$:-22 be_the:18 be_there:-32 been:-22 before_$:23 bendiciones:-22
bendiciones_$:-20 best:-21 best_$:-21 better:-19 bici:39 bien:-30 bien_$:-33 bike:28 bot:74 bot_$:53 both:-20
brakes:-29 brand:52 bring:124 bring_my:59 btw:29 buen:-27 bus_stop:18 but:-29 buy:21 buzon:27 by:-85 by_the:-37
call:-46 call_my:-60 can:121 can__bring:55 can__check:67 can__come:-32 can__do:-79 can__pick:24 can__send:55
can__talk:-38 can_do:-22 can_my:144 can_we:-35 can_you:87 cant_do:-25 car_$:-41 car_is:-53 card:39 cards:29
cards_$:29 care:-20 care_of:-19 carro:-43 carros:65 cars:33 cars_$:48 casa:39 celular_$:18 cerca:25
change__appointment:31 change_my:18 charge:-59 charge_$:-24 charge_for:-31 checar:27 check_$:-21 check_my:47 choco:21
cita:-64 cita_$:-28 click:57 closed:-19 cobran:-45 cobran_por:-23 coffee:19 como:19 company:-19 comprends:45
comprends_pas:45 con:-54 con_mi:-30 con_ustedes:-18 congratulations:51 corner:22 cost:-40 cost_$:-29 could:37
could__be:51 covered:-19 cruise:27 cuando_llegue:22 cuanto__y:47 da:-20 dan:113 day:-74 day_$:-71 de_la:26
de_llantas:55 de_que:-36 de_su:-18 de_un:23 de_una:-28 dejar:24 dejeme:-27 del_carro:-21 descuento:-58 despues:-20
dia:-77 dia_$:-38 dias_$:19 did:152 did__get:19 did_i:64 did_my:53 did_you:51 digo:-23 dijo:38 direccion:-18
discount:-18 do:69 do_$:-74 do__charge:-34 do__close:-29 do__do:46 do__guys:76 do__have:82 do__keep:-27 do__know:-48
do__need:37 do__open:-53 do__sell:68 do__take:119 do__use:40 do__work:20 do_friday:-29 do_i:-28 do_it:-53 do_my:-28
do_the:-25 do_you:339 does:39 does_it:26 dog:49 domingo:-21 done_$:40 dont:-20 door:47 door_$:56 down:-39 down_$:-28
drive:-26 driving:85 driving_with:80 drop:96 drop__car:36 drop__off:42 drop_it:66 drop_the:20 earlier:-27 early:-32
early_$:-38 eh:50 el:18 el__se:-20 el__tienen:27 el__y:-21 el_aire:82 el_carro:-53 el_de:-20 el_mismo:-27
el_viernes:-38 empty:29 en:-27 en_dos:22 en_este:29 end:-18 engine:-24 entendi:33 era:48 eres:44 es:-74 es_$:53
es__y:27 es_de:-19 es_gratis:-32 es_usted:30 esa:-24 escribo:70 ese:-39 eso_$:-27 eso_y:27 espanol:18 espera:55
esperar:-51 esperar_$:-36 esposa:-24 esta:-35 estamos:-21 estan:48 este:38 este__no:26 estoy_de:-26 estoy_en:-32
estoy_manejando:87 exactly:-20 factura:79 favor:-27 favor_$:-24 feels:-21 feliz:-24 fell:41 fin:-27 find_a:28
finish:-33 first:-23 first_$:-21 fix:18 floor:24 for_$:-38 for_me:19 for_my:-20 for_the:35 four:-39 free:-39
free_$:-30 frenos:-50 frenos_$:-45 friday_$:-40 friday_and:18 from:29 fue_el:42 fuga:-24 game:89 gano:25 get:-41
get__a:-43 get_a:24 get_me:-31 get_my:-22 give:-25 give_me:-18 going:-52 going_on:-35 gone:-26 good:-23 good__you:18
got:-33 gratis:-35 gratis_$:-32 grave:-18 gustaria:-19 gusto:20 guys_$:-31 guys_do:75 guys_open:-18 hablan:74
hablar_con:-25 hablo:-19 hace:-18 hace_falta:25 hacen:103 had:-20 happy:-20 has:-21 have:-26 have__a:19
have__wrong:-21 have_a:48 have_loaners:26 have_my:-18 have_the:-28 have_to:-34 he:-23 hello:-57 help:-22 help_$:-30
her:-19 here:63 here_$:50 hey:160 hi:49 hijo:36 hit:-23 hitch:33 hm:103 hmm:65 home:49 horario:-21 how:-38 how__i:-20
how__is:25 how__you:-42 how_do:-59 how_long:38 hoy:24 i__a:30 i__all:-25 i__have:-23 i__in:-19 i__it:-24 i__my:72
i__need:-19 i__off:28 i__that:21 i__there:-21 i__to:98 i_am:42 i_bring:46 i_can:-44 i_cant:68 i_come:-39 i_do:-53
i_drop:38 i_know:-50 i_leave:45 i_mean:43 i_need:103 i_speak:-29 i_talk:-38 i_talking:29 id:-29 idea:41 if:-48
ill:-67 ill_take:-23 im:-38 im__a:41 im__with:79 im_driving:84 im_good:-22 im_in:25 in:-30 in_$:-24 in__waiting:26
in_a:72 in_my:-20 info:-48 info_$:-47 ingles:59 into:44 into_the:48 invoice:75 invoice_$:78 is:57 is_$:48 is__a:27
is__about:-19 is__and:-20 is__car:99 is__really:-23 is__the:107 is_a:-72 is_it:-60 is_making:-30 is_my:187 is_on:55
is_the:61 is_there:69 is_this:-52 is_too:-22 it:-120 it_$:-44 it__for:23 it__me:28 it__under:-19 it_a:-18 it_again:79
it_now:-22 it_off:37 jaja:53 jaja_$:40 jajaja:46 je:126 je__comprends:45 je_ne:87 juego:54 just:-53 k_$:-21 keep:-22
key:27 key_$:28 knock:38 know:-67 know_you:-53 la:-30 la__de:21 la__en:25 la__es:34 la_bici:30 la_casa:22 la_cita:-34
la_factura:79 la_llanta:-18 labor:-25 labor_$:-18 las:-48 las_llantas:-23 last_night:31 late:-34 later:29 later_$:38
le:-78 le__a:-26 le__una:21 leave:34 les:-32 let:-29 let_me:-18 lets:-19 light:-47 light__on:-20 light_is:-24
like:-38 list:-33 list_$:-29 little:20 llanta:-25 llantas:62 llantas_$:-29 llegue:34 llegue_a:23 llevar:72
llevar__mi:25 llevar_a:24 llevarlo_$:-26 lo:-165 lo__a:-28 lo__mi:-20 lo__no:20 loaners:26 loaners_$:26 location:-66
location_$:-27 lol:98 lol_$:78 lol_no:33 long:26 long_is:29 luego:28 luego_$:63 lugar:-45 luz:-20 machine:32
making:-37 making_a:-22 mal:-33 mal_$:-21 manana:-25 mandan:98 mande:48 manden:-27 manejando:38 maquina:47 marca:42
mas:-26 mas_$:-22 mas_tarde:31 may:33 me:-140 me_$:-20 me__el:75 me__la:18 me_a:-51 me_again:-28 me_fue:44
me_gustaria:-19 me_off:-30 me_up:20 mean:27 mean_$:43 mecanico:-19 mecanico_$:-23 meeting:46 mejor:-19 mensaje:72
mensajes:-64 mensajes_$:-46 message:96 message_$:48 message_me:-37 messages:-33 messages_$:-26 mi:19 mi_$:-18
mi__choco:22 mi__no:25 mi_cita:-20 mi_esposa:-24 mi_hijo:38 might:-28 mijo:25 mil:-35 millas:-20 millas_$:-18 mis:32
mom:76 monday_$:-18 more:-42 morning:-18 motor:-18 move:-19 mucho:-43 must:-22 muy:-53 my:51 my__go:56 my__oil:28
my__says:-31 my__will:-19 my_car:38 my_number:-48 my_old:18 my_own:44 my_phone:30 my_son:31 my_spare:26 nadie:-18
name:-26 nao:78 ne:87 ne__pas:87 ne_comprends:45 near:22 need__bring:87 need__change:38 need_that:-33 need_to:104
neither:-21 next:-26 ni:-71 night:63 night_$:38 ninos:23 ninos_$:29 no_$:-56 no__at:67 no__here:-28 no__you:31
no_estoy:29 no_idea:68 no_noise:67 no_puedo:21 no_thanks:23 nobody:-30 noise_$:-34 noise__all:68 noise_at:68
nomas:-30 non:37 north:-42 not:-24 not__me:-39 not_be:51 now:-53 now_$:-34 number:-36 number_$:-40 numero:-29
ocupo:23 of_my:42 off:23 off_my:29 off_the:38 off_your:-23 office:73 office_$:26 oi:42 oil:70 oil_$:30 ok_$:24
olvide:37 on:-22 on_$:-19 on__th:55 on__the:45 on_my:-42 one:-18 one_$:-24 open:-97 out_$:-30 out__the:49 out_of:48
over:-33 own:41 own_oil:28 oye:74 pagar:29 paperwork:46 paperwork_$:46 para_cuando:-28 para_el:-26 partes:61
partes_$:62 parts:31 pas:100 pasa:-19 pass_$:-18 perdon:19 pero_no:20 person_$:-21 phone_$:25 pick:20 pick__up:24
please:-31 please_$:-42 por:-73 por_favor:-21 precio:-39 precio_$:-27 price:-87 price_$:-22 puede_$:-26 puedo__a:25
puedo_llevar:55 pues_$:-19 put:19 put_on:37 que_$:189 que__de:38 que_es:-34 que_tiene:-29 quick:-28 quienes:-21
quienes_son:-21 quieren:-18 quote:-23 radio:22 rato:-24 read:26 ready:29 ready_$:39 real_person:18 really:-91
recibo:61 replaced:-24 reply:69 report:34 respondo:56 restart:-20 revisar:-19 revoke:-26 revoke_$:-22 right:47
right_now:59 ring:-48 ring_me:-39 robot:79 robot_$:71 room:31 room_$:50 rough:-20 sabado_$:-25 sabe:24 saben:48
sala:73 sali:19 same:-34 same_day:-45 saturday:23 say_$:20 says:-38 schedule:-26 se:-67 se__fue:43 se_lo:-21 se_me:35
second:-20 see:31 see_you:18 sell:74 send:43 send__the:18 service:22 set:-50 shop:-50 shuttle:26 shuttle_$:32 si:-29
si_$:-18 si_el:20 si_lo:-21 si_pero:-23 si_puedo:29 side:-49 side_$:-40 siento:19 sigo:-25 snow:56 so:-35 sold:-34
somewhere:21 son:-37 son_$:-29 sorry:20 sorry_i:70 soy:-19 spare:26 speak:-42 speak_to:-22 speak_with:-19
squeaking:43 st:-20 st_$:-40 station:29 steering:-26 still:20 still_good:27 stop:-29 street:-24 street_$:-20 su:118
suena:-20 sure__you:20 t:-26 take:30 take__off:-41 take_me:-27 take_my:-26 talk__a:-42 talk_to:-54 talking:25
talking_to:29 taller:-25 tambien:70 tambien_$:42 tan:-20 tanto:-18 tarde_$:33 tarjeta:58 tax:-18 te:70 te__luego:69
tech:-36 terrible:-19 text:26 texting:-28 texting_me:-19 textos:-21 textos_$:-18 texts:-28 th_$:27 than:-23 thank:-30
thank_you:-30 thanks:19 that:-96 that_$:-38 that_is:-26 the_$:34 the__before:27 the__for:-21 the__in:-27 the__is:-18
the__last:40 the__off:34 the__on:32 the__side:-41 the_address:-24 the_best:-20 the_door:56 the_messages:-22
the_office:41 the_th:28 the_truck:-18 the_trunk:26 the_waiting:43 the_wrong:-29 them:-21 then:-37 then_$:-25 there:23
there_$:49 there__a:-35 there_is:-68 these:-28 thing:-22 this:-59 this__the:-19 this_a:71 this_about:-19 this_is:-26
through:39 through_$:54 thurs:-23 thursday_$:-29 tiene:-84 tiene_$:-18 tienen:115 tienen_$:-24 tienen__de:82
tienen__el:-37 time:-28 time_$:-52 time__it:81 time__you:-53 time_do:-52 tio:29 tirando:-22 tire:-33 tires_$:-31
to:-39 to__a:-18 to__in:29 to__it:-30 to__the:19 to__this:-20 to_a:-24 to_bring:85 to_change:36 to_do:-41
to_drive:-24 to_my:-25 to_the:-20 today:-31 today_$:-28 todo:-34 too:31 too_$:73 too_early:-22 took:-22 tortillas:56
tow:57 tow_hitch:33 trabajan:53 trabajando:-23 trailer:26 transmision:-20 trip:70 truck:-33 trunk:26 tu:18 turned:55
typing:19 under:-31 up:-79 up_$:-34 urgent_$:-24 urgente:-19 us:-20 use:60 used:40 ustedes:23 ustedes_$:-49
vacaciones:-25 venden:127 vendi:-27 verdad_$:21 vida:20 viene:-19 viernes:-34 viernes_$:-35 voice:27 wait:-26
waiting:40 waiting_room:36 warranty:33 was__again:82 was_it:81 way:-19 we_do:-25 week:-21 week_$:-27 well:28
well_$:28 went:-29 were:-30 what_$:53 what__are:-18 what__do:-40 what__is:26 what__this:-19 what__you:-94
what_did:-49 what_do:-38 what_is:-32 what_time:103 wheel:-23 when:-27 when__you:-27 when_do:-27 where:-19
where__you:-32 where_are:-30 which:-19 while:21 who__this:-24 who__you:-34 who_are:-33 why:-69 why_$:-28 why__you:-49
why_do:-49 wife:-27 wife__it:35 wife_says:-19 wifi:192 wifi_$:113 will__it:-36 will__there:-18 will_do:-20 window:72
windows_$:18 wipers:60 with_my:-19 with_the:-22 won:79 work:-29 work_$:-20 work_on:30 worn:-22 would:-19 wrong:-50
wrong_person:-18 y_$:-21 y__es:-18 y__que:24 y_eso:33 ya:-70 ya_$:-23 ya__mi:60 ya_esta:39 ya_lo:-20 yeah:-18 yep:24
yep__you:19 yes:-24 yes_$:-32 yes__it:-19 yes__you:56 yes_and:26 yes_do:56 yes_i:-23 yo:-48 you:64 you_$:-87
you__a:139 you__and:32 you__bot:41 you__do:74 you__for:-20 you__have:-31 you__it:-26 you__me:-37 you__on:60
you__open:-19 you__that:-24 you__the:24 you__today:-23 you__what:-19 you_a:88 you_are:-52 you_call:-64 you_can:-29
you_charge:-34 you_check:77 you_close:-30 you_have:79 you_keep:-27 you_need:-34 you_on:-44 you_open:-72 you_pick:24
you_put:34 you_sell:80 you_send:55 you_still:-19 you_take:91 you_text:33 you_there:57 you_work:20 your:66 your__is:68
your_message:28 youre:-24
"""
