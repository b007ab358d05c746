"""What speaks for and against `unclear`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "unclear"
BIAS = -63
WEIGHTS = """\
#aben:62 #abla:32 #able:-26 #ablo:-25 #abor:-32 #acac:-25 #acce:29 #acci:23 #aced:-38 #acei:39 #acen:149 #acep:132
#achi:69 #actu:118 #adas:37 #addr:-59 #adel:-30 #adio:28 #ador:135 #ados:33 #adre:41 #afte:-32 #agai:53 #agar:44
#agen:36 #ages:-55 #agos:35 #agua:-59 #ague:34 #ahor:-28 #aigo:-31 #aila:23 #ailb:25 #aile:79 #aire:78 #aiti:38
#ajaj:80 #ajan:51 #ajes:-73 #aken:-22 #akes:-53 #alam:29 #alan:36 #aler:-22 #algo:-55 #algu:37 #alia:26 #alie:-27
#alin:30 #alki:29 #alle:-65 #allp:-62 #ally:-82 #almo:-22 #alon:-26 #alor:22 #alre:-49 #alri:-22 #also:80 #amag:-24
#amal:30 #amar:-28 #amat:33 #ambi:45 #amen:-30 #amor:28 #amos:-51 #anan:22 #anas:66 #ance:-22 #anci:28 #anda:41
#ando:-87 #ands:-25 #anej:69 #aner:24 #anks:25 #anne:-26 #anoc:33 #anol:31 #anos:70 #ansm:32 #ante:-34 #anti:55
#anty:36 #anym:44 #anyo:49 #apel:26 #aper:22 #apid:-24 #appo:-28 #apto:26 #apun:-23 #aqui:84 #aran:61 #ards:55
#area:22 #aren:-32 #arge:-70 #aria:-32 #arje:72 #arki:32 #arle:47 #arli:-40 #arly:-55 #arme:-82 #aron:-53 #arou:-33
#arra:36 #arre:31 #arri:49 #arro:58 #arse:33 #arta:37 #arti:95 #arts:37 #asap:-31 #asdf:258 #asdk:127 #aseg:56
#ases:27 #asse:30 #asta:-50 #aste:74 #atan:77 #atch:-56 #ater:48 #atic:96 #atis:-48 #ativ:-48 #ator:-51 #atra:-35
#atul:68 #auto:179 #avad:33 #aves:26 #avia:34 #avin:-31 #ayme:68 #babe:34 #baja:36 #bajo:-28 #ball:-64 #band:-23
#bano:77 #bate:30 #befo:-25 #bend:-29 #best:-27 #biar:-26 #bici:42 #bien:81 #bike:76 #blan:82 #blar:-42 #blem:-27
#bles:-37 #blig:-23 #bloc:64 #boat:37 #body:-49 #bonj:80 #book:-28 #brak:-38 #brec:-23 #brig:79 #brin:127 #bscr:-28
#buen:-27 #caci:-24 #cade:26 #cafe:39 #call:-66 #calo:22 #camb:-92 #came:-46 #cant:26 #canz:-28 #card:97 #care:-22
#carr:45 #cars:44 #cart:36 #casa:87 #cash:47 #cati:-67 #ceit:39 #cell:-23 #celu:23 #cept:129 #cerc:34 #cerl:-24
#chai:37 #chan:-31 #char:-82 #ched:-33 #chem:-24 #cher:28 #chin:41 #cial:-47 #cibo:87 #cita:-79 #cked:96 #cker:-25
#ckin:-32 #ckup:-38 #clai:27 #clea:34 #cles:33 #clic:119 #clim:37 #clos:-48 #cobr:-64 #code:80 #coff:27 #coge:-22
#coma:63 #comp:88 #cond:32 #cong:77 #cont:46 #corn:34 #cosa:25 #cost:-79 #cove:-29 #cred:125 #crui:31 #cted:25
#ctic:22 #ctio:-30 #ctiv:-26 #ctri:62 #ctua:41 #ctur:121 #cuar:-27 #cubr:22 #cuen:-72 #cupo:42 #curr:60 #cycl:57
#dama:-24 #darm:-28 #date:36 #davi:34 #days:-57 #ddre:-59 #deci:-29 #dedo:51 #deja:45 #deje:-55 #dela:-27 #dele:-38
#deli:55 #delo:-25 #deme:-54 #depo:67 #desc:-93 #deta:37 #dies:50 #diff:-22 #digo:85 #dijo:28 #dimo:-25 #dinn:77
#dire:-68 #disp:43 #dist:80 #dito:107 #dler:25 #does:44 #dogs:40 #domi:-24 #dond:73 #dont:-29 #door:56 #dora:54
#dore:57 #down:-66 #dres:-72 #drio:45 #driv:44 #drop:101 #dule:-37 #eaci:38 #eact:-23 #eage:-24 #eagu:29 #eaki:31
#eall:-134 #eand:-22 #eard:24 #earl:-97 #ease:-44 #eats:27 #eave:67 #eavi:-23 #eces:-63 #echa:-22 #eche:27 #echi:-29
#ecia:-81 #ecib:104 #ecio:-81 #ecoj:27 #ecte:26 #ectr:62 #edal:-25 #edes:46 #edit:122 #edul:-37 #eels:-26 #eena:34
#eeri:-41 #eeti:52 #efie:-26 #efor:-25 #egat:-22 #egla:77 #egue:26 #egui:-60 #egur:72 #eite:41 #eith:-43 #ejan:96
#ejar:52 #ejas:22 #ejem:-31 #ejen:-25 #elan:-36 #elec:89 #eliv:58 #ello:-85 #else:-29 #elul:23 #elva:-23 #emai:85
#eman:-38 #empr:-59 #empt:37 #enag:34 #enco:-22 #ende:161 #endi:-45 #endo:24 #ends:29 #enen:118 #enes:-30 #engi:-33
#enme:-80 #enos:-52 #ente:52 #enti:-38 #entl:56 #ento:-58 #ents:31 #epai:27 #epla:-34 #eply:76 #epos:65 #epta:139
#equi:-26 #eran:-28 #erar:-66 #erca:32 #ered:37 #eren:-54 #eria:37 #erin:-47 #erio:-30 #erlo:-26 #erne:-22 #erst:43
#erti:53 #erwo:47 #escr:56 #escu:-76 #esda:-29 #esel:47 #espa:23 #espe:-65 #espo:47 #essa:51 #esta:57 #esto:-38
#etai:38 #eter:-50 #ethe:24 #etin:48 #evar:107 #even:-27 #ever:-82 #evis:40 #evok:-28 #eway:-22 #exam:62 #expl:-29
#exti:-41 #exto:-36 #exts:-24 #fact:87 #feel:-25 #fell:51 #fere:-24 #ffee:27 #ffic:69 #ffle:27 #fica:24 #fice:84
#filt:-27 #fina:33 #fine:-30 #fini:-55 #firs:-36 #flie:22 #fona:-23 #fore:-42 #forg:-22 #forw:-22 #foto:90 #four:-37
#free:-52 #fren:-87 #frij:31 #from:33 #fter:-32 #fuga:-28 #gado:92 #gain:53 #gale:-23 #game:84 #gana:78 #gano:46
#gara:45 #gend:-79 #ghts:-29 #ghty:-22 #gift:66 #gine:-33 #give:-30 #glan:82 #glas:62 #gles:106 #goin:-32 #good:-32
#grab:23 #grad:-25 #grat:28 #grea:-26 #grua:71 #gual:-30 #guan:-25 #guar:60 #guie:42 #guir:-58 #gura:56 #hace:91
#hago:-26 #haha:58 #hair:29 #hanc:-25 #harg:-77 #hast:-26 #head:-38 #hedu:-37 #hell:-72 #heme:-23 #here:107 #hese:-48
#hiel:34 #hijo:26 #hile:27 #hina:-29 #hine:62 #hink:-30 #hiri:102 #hitc:47 #hola:24 #hole:-33 #home:37 #hone:25
#hora:-55 #hosp:-26 #hous:-24 #hrou:37 #hurs:-42 #husb:-37 #hutt:36 #hybr:28 #iado:26 #iben:26 #ibir:-22 #ible:-23
#icat:30 #icie:-25 #icke:-22 #icku:-38 #icos:63 #ictu:43 #idea:50 #ider:23 #idri:45 #ieja:27 #ield:28 #iemp:-36
#iend:28 #iene:-56 #iere:-37 #iero:-24 #iese:51 #ieza:45 #iffe:-22 #ific:30 #igad:69 #igua:-34 #ilbo:25 #iler:71
#illa:53 #imag:161 #imat:-29 #imit:25 #imos:-27 #impi:58 #indo:74 #inea:35 #ines:39 #info:-51 #ingl:97 #ingo:-39
#ingu:-25 #inis:-52 #inne:75 #inos:25 #insp:42 #inst:31 #inte:-24 #intm:-27 #into:55 #invo:72 #iona:24 #ione:52
#ions:85 #ious:-38 #iper:64 #ippe:-29 #iran:-22 #irec:-68 #irin:113 #irma:-30 #irst:-36 #irve:41 #isan:105 #isar:-31
#isit:-29 #ista:-28 #iste:40 #itch:30 #ited:25 #ithe:-46 #itin:33 #itor:28 #itte:22 #iver:47 #ivin:86 #izza:27
#jaja:193 #jefe:-23 #jeje:58 #jeme:-30 #jeta:72 #jour:66 #jueg:77 #just:-70 #keep:-44 #know:-80 #labo:-31 #lady:29
#laim:27 #lain:-35 #lant:-22 #lapt:26 #lari:34 #lass:49 #lati:61 #lava:51 #lave:64 #lbox:25 #lcan:-28 #ldnt:-32
#lean:42 #leas:-28 #leav:51 #lect:89 #left:-23 #legi:-30 #lego:32 #legu:24 #lenc:25 #lent:44 #lers:36 #less:-41
#leva:98 #levo:-27 #lgui:25 #lick:38 #lien:-42 #lier:-38 #lies:30 #ligh:-72 #like:-67 #limp:53 #ling:-27 #link:37
#list:-79 #live:33 #lkin:29 #llam:-61 #llan:33 #llas:32 #llav:65 #lleg:68 #ller:-27 #llev:86 #llpa:-62 #loan:31
#loca:-94 #lock:62 #look:-24 #loor:25 #lose:-34 #love:61 #lowe:28 #lpar:-62 #lrea:-49 #lrig:-22 #lueg:33 #luga:-41
#lula:23 #lvid:23 #mach:63 #madr:56 #mage:138 #mail:81 #maki:-34 #male:29 #mama:41 #mana:-41 #mand:129 #mane:35
#maqu:61 #marm:-31 #mart:-37 #mati:80 #matt:32 #mayo:-27 #mber:-22 #mbia:-33 #mbie:110 #mbio:-32 #meet:57 #memb:22
#ment:36 #meri:25 #mess:66 #mete:-22 #mien:40 #mier:-25 #migh:-27 #mijo:36 #mile:-35 #mill:-38 #mind:-33 #ming:-52
#misi:39 #mite:25 #moni:25 #moto:104 #move:-48 #mpan:-33 #mpar:38 #mpia:59 #mple:67 #mpra:36 #mpty:39 #mput:32
#much:-62 #must:-32 #nada:-38 #nado:25 #nage:26 #name:-50 #nanc:35 #nazo:-23 #nced:24 #ncel:-27 #ncon:-30 #ndam:-27
#ndan:122 #nday:-28 #ndem:-40 #nden:134 #nder:-44 #ndim:-23 #ndin:-23 #ndow:85 #neac:38 #nece:-51 #nega:-23 #neit:-27
#neja:85 #ners:25 #nest:-26 #neve:-26 #nged:-23 #ngin:-32 #ngla:102 #ngle:97 #ngra:75 #ngun:-24 #nigh:64 #ning:-40
#nino:36 #nion:37 #nish:-66 #njou:80 #nner:53 #nobo:-41 #noma:-49 #none:-27 #nort:-33 #noth:-26 #noti:26 #nsen:-22
#nsmi:32 #nsor:23 #nspe:42 #ntas:77 #nter:-40 #ntes:51 #ntia:50 #ntly:56 #ntme:-27 #ntra:79 #nuev:-51 #numb:-46
#nvoi:74 #nymo:44 #oane:30 #oble:-22 #obli:-23 #obod:-41 #obot:106 #obra:-58 #obri:68 #ocat:-96 #ocke:69 #ocup:38
#odav:34 #oday:-48 #oddl:25 #odri:24 #offe:48 #offi:84 #oger:-28 #oice:95 #oing:-35 #oint:-39 #okin:-27 #olar:31
#olvi:25 #omad:64 #omas:-52 #omat:129 #omer:30 #omet:-22 #omew:28 #omin:-42 #ompl:-28 #ompr:91 #ompu:38 #onad:26
#onaz:-23 #onde:90 #ondo:74 #onen:69 #ongr:75 #onjo:79 #onta:-24 #ontr:79 #ooki:-31 #oone:-30 #oost:29 #open:-121
#opto:-23 #orar:-24 #orcy:33 #ores:79 #orio:-33 #orke:22 #orki:29 #orma:-35 #orme:32 #orni:-22 #orra:30 #orre:-45
#orro:23 #orry:26 #orse:-24 #orth:-37 #orti:57 #orwa:-22 #osit:62 #ospi:-26 #ossi:-28 #oste:26 #otal:-27 #oter:22
#othe:-22 #otif:24 #otor:37 #otos:55 #otra:24 #otro:-22 #ouch:29 #ound:-48 #oung:24 #oure:-38 #ousl:-23 #over:-96
#owed:31 #owli:-22 #pack:56 #paga:38 #pago:31 #pano:31 #pape:69 #park:-38 #part:208 #pass:24 #paym:68 #peak:-54
#peci:-66 #peda:-26 #pedi:26 #pera:-40 #pero:-26 #perr:57 #pers:79 #perw:47 #peso:32 #phon:36 #pict:43 #pido:-22
#piez:45 #pint:25 #pita:-27 #pizz:27 #plai:-33 #podr:25 #poin:-36 #pond:73 #pone:61 #pong:-22 #pons:30 #posa:-23
#pose:28 #posi:56 #pped:-39 #ppin:-22 #ppoi:-28 #ppos:30 #prac:23 #prec:-59 #pref:-34 #pres:55 #pric:-109 #prin:-42
#prob:-22 #prop:29 #ptan:158 #ptop:26 #ptou:-23 #pued:30 #puer:50 #pull:-24 #punt:-27 #quea:41 #ques:28 #quic:-38
#quie:-42 #quin:69 #quit:-49 #quot:-38 #raba:35 #ract:25 #rail:90 #rain:-54 #rake:-36 #rame:-52 #rand:26 #rano:-26
#rant:91 #ranz:44 #rapi:-27 #rari:-27 #raro:-48 #rata:53 #rate:-28 #rati:-58 #rato:-35 #ratu:61 #rcar:-27 #rcyc:33
#rdan:23 #rdon:27 #reac:-31 #real:-137 #recc:-26 #rece:28 #rect:-38 #refi:-26 #regl:58 #remi:75 #reno:-62 #rent:99
#repa:31 #repl:55 #resp:100 #ress:-68 #rest:33 #resu:-29 #revi:47 #revo:-29 #rgen:-35 #rger:30 #ribe:-28 #ribi:-22
#ribo:72 #rica:29 #rice:-110 #rico:47 #riga:68 #righ:36 #rinc:-22 #ring:99 #rios:45 #riou:-33 #ripp:-31 #rive:-45
#rivi:103 #rjet:72 #rkin:61 #rlie:-40 #rmac:-24 #rmat:-22 #rned:51 #rnin:-26 #robo:105 #rock:-24 #rong:-46 #ront:-24
#room:60 #ropi:32 #roun:-48 #rran:65 #rreg:48 #rren:43 #rrit:36 #rros:165 #rted:-27 #rtes:51 #rtid:96 #rtil:67
#ruck:-43 #ruis:31 #runk:40 #rwar:-23 #rwor:47 #sabe:69 #saca:-44 #sada:70 #safe:-22 #sage:90 #sala:154 #sale:26
#salg:-24 #sali:-28 #same:-48 #sary:-25 #says:-60 #sban:-37 #sche:-37 #scue:-71 #sday:-34 #sdkj:127 #sele:27 #sell:89
#sema:-24 #sena:23 #send:82 #seri:-59 #shie:27 #shop:-78 #sibl:-36 #sica:37 #side:-24 #sigo:-31 #sill:30 #sing:-23
#sirv:40 #slot:-28 #smis:32 #snow:74 #sold:-27 #soon:-51 #sorr:30 #spac:-33 #spam:-22 #span:56 #spar:24 #spea:-54
#spec:-26 #sper:-38 #spit:-26 #spon:123 #spos:-36 #spri:-34 #sque:29 #ssag:75 #ssar:-24 #ssed:-39 #sses:49 #ssib:-25
#stal:22 #stan:63 #star:-65 #stee:-42 #stic:-35 #stil:26 #stim:-49 #stop:-68 #stre:-38 #stri:-27 #subs:-28 #suen:-23
#sung:55 #supp:37 #tail:39 #tala:23 #talk:42 #tall:-40 #tama:30 #tamb:137 #tank:23 #tant:-29 #tard:-26 #tarj:72
#tars:23 #tati:29 #tede:48 #teen:28 #teer:-42 #tely:-24 #temp:-52 #tend:68 #tent:-22 #tera:-45 #teri:54 #ters:33
#teve:-23 #text:-101 #than:-36 #that:-42 #then:-31 #thes:-48 #thin:-39 #this:-72 #thro:49 #thum:-22 #thur:-32
#tica:38 #tice:26 #tico:32 #tido:82 #tiem:-27 #tifi:50 #till:77 #tima:-45 #time:-35 #tint:27 #tion:-23 #tire:-34
#tiva:-23 #tive:-42 #tmen:-27 #toda:-27 #todd:25 #todo:-46 #toma:116 #took:-22 #torc:33 #tore:39 #tori:-28 #tort:76
#tota:-27 #tout:-23 #town:-22 #trab:28 #traf:-24 #trai:73 #trar:-25 #trat:53 #tree:-26 #tric:62 #trip:55 #truc:-48
#trun:40 #ttle:38 #tual:35 #tula:68 #tura:104 #turb:85 #ture:54 #turn:33 #twic:-27 #twis:-32 #typi:31 #uali:24
#uall:50 #uard:52 #uare:-22 #ubsc:-28 #ucho:-55 #udan:22 #ueak:40 #uede:27 #uego:98 #uena:-41 #uent:-78 #uerc:33
#uest:35 #ueva:-36 #ugar:-41 #ught:-28 #uick:-38 #uido:-34 #uien:25 #uina:54 #uise:29 #ulat:68 #uldn:-32 #umbe:-47
#unda:-24 #unde:-44 #unge:23 #ungl:55 #unio:56 #unos:-23 #unte:-22 #uote:-38 #upan:28 #uppo:29 #uran:69 #urge:-23
#urne:51 #urre:59 #usad:77 #usan:61 #usba:-37 #used:52 #usly:-23 #uste:35 #utom:124 #uttl:36 #vaca:-23 #vado:25
#vend:188 #veng:33 #vere:26 #vers:29 #vert:43 #very:-24 #vete:-23 #viaj:-22 #vibr:-31 #vide:27 #vidr:45 #ving:41
#visa:71 #visi:-58 #voic:96 #voke:-28 #vuel:-37 #walk:27 #want:40 #ward:-28 #warr:36 #weat:31 #week:-30 #well:22
#went:-30 #were:-45 #when:-27 #whil:27 #wice:-27 #wife:-44 #wifi:230 #wind:105 #wipe:55 #wist:-32 #wlin:-22 #word:59
#work:57 #wors:-23 #woul:-27 #wron:-46 #xtin:-41 #xtos:-34 #ybri:28 #ycle:51 #ymen:68 #ymor:44 #your:41 #ypin:31
%again_later:-114 %again_later%agree:-33 %again_later%call_off:29 %again_later%car:-52 %again_later%car_part:41
%again_later%doubt:36 %again_later%lift:-76 %again_later%noise:38 %again_later%odometer:22 %again_later%pay_day:-59
%again_later%phone:57 %again_later%question:26 %again_later%staff:54 %again_later%start_again:79 %agree:-104
%agree%away:-29 %agree%bring:46 %agree%call_off:65 %agree%car:63 %agree%car_part:54 %agree%do_it:33 %agree%doubt:28
%agree%elsewhere:22 %agree%family:34 %agree%how_long:35 %agree%lift:66 %agree%meaning:28 %agree%money:131
%agree%noise:-50 %agree%pay_day:72 %agree%phone:33 %agree%place:27 %agree%question:-72 %agree%start_again:29
%agree%who:27 %agree%wrong_one:31 %away:-55 %away%bring:-22 %away%call_off:36 %away%car:23 %away%elsewhere:-22
%away%lift:-27 %away%message:41 %away%odometer:-28 %away%on_way:-37 %away%phone:46 %away%question:24
%away%shift_it:-29 %away%staff:82 %away%start_again:22 %bad:-169 %bad%car_part:-29 %bad%do_it:-22 %bad%machine:-24
%bad%question:32 %bad%staff:-52 %bad%who:44 %bring:-81 %bring%busy:-53 %bring%call_off:34 %bring%car:-39
%bring%car_part:40 %bring%elsewhere:54 %bring%family:111 %bring%leave_me:-48 %bring%money:26 %bring%odometer:53
%bring%opening:38 %bring%place:32 %bring%question:38 %bring%refuse:84 %bring%season:29 %bring%shift_it:49
%bring%who:35 %bring%wrong_one:64 %busy:-43 %busy%call_off:24 %busy%family:39 %busy%phone:36 %busy%question:50
%busy%shift_it:34 %busy%staff:38 %busy%who:24 %call_off:-23 %call_off%do_it:-66 %call_off%elsewhere:41
%call_off%fails:41 %call_off%how_long:22 %call_off%machine:26 %call_off%money:94 %call_off%noise:24
%call_off%odometer:118 %call_off%on_way:-31 %call_off%phone:39 %call_off%place:25 %call_off%refuse:-45
%call_off%start_again:-75 %call_off%thanks:66 %call_off%who:36 %car%car_part:-58 %car%do_it:27 %car%family:-61
%car%gone_car:-33 %car%noise:-56 %car%phone:41 %car%place:33 %car%refuse:-92 %car%shift_it:-25 %car%staff:75
%car_part:-39 %car_part%fails:-104 %car_part%leak:-50 %car_part%lift:33 %car_part%machine:-34 %car_part%money:-43
%car_part%noise:-32 %car_part%on_way:-60 %car_part%pay_day:64 %car_part%phone:81 %car_part%place:-40
%car_part%refuse:23 %car_part%season:49 %car_part%shake:-34 %car_part%shift_it:60 %car_part%smoke_smell:-27
%car_part%staff:36 %car_part%start_again:38 %car_part%who:24 %car_part%wrong_one:23 %do_it:-61 %do_it%family:-94
%do_it%leave_me:37 %do_it%lift:-30 %do_it%money:41 %do_it%noise:-24 %do_it%odometer:-36 %do_it%on_way:30
%do_it%question:-41 %do_it%refuse:46 %do_it%season:38 %do_it%staff:101 %do_it%thanks:26 %do_it%who:31
%doubt%odometer:-24 %doubt%shift_it:36 %elsewhere:-86 %elsewhere%family:-24 %elsewhere%money:37 %elsewhere%on_way:34
%elsewhere%phone:-25 %elsewhere%place:-43 %elsewhere%who:71 %elsewhere%wrong_one:56 %fails:-31 %fails%message:35
%fails%place:57 %fails%question:49 %fails%refuse:25 %fails%staff:36 %family:70 %family%how_long:30 %family%message:42
%family%phone:-39 %family%place:26 %family%question:64 %family%shift_it:95 %family%start_again:26 %family%who:-60
%gone_car:-45 %gone_car%odometer:-24 %gone_car%question:45 %gone_car%refuse:54 %gone_car%wrong_one:39 %how_long:-132
%how_long%money:45 %how_long%place:42 %how_long%question:136 %how_long%shift_it:-43 %how_long%start_again:41
%leak:-93 %leave_me:-57 %leave_me%lift:58 %leave_me%on_way:69 %leave_me%refuse:22 %lift:115 %lift%on_way:-37
%lift%place:40 %lift%question:45 %lift%refuse:24 %machine:323 %machine%message:35 %machine%question:63
%machine%staff:35 %machine%wrong_one:31 %meaning:-117 %meaning%money:28 %message%money:78 %message%phone:23
%message%refuse:-24 %message%shift_it:64 %message%start_again:-107 %message%who:-23 %message%wrong_one:31 %money:-132
%money%on_way:-46 %money%staff:31 %money%who:76 %noise%question:-47 %noise%refuse:36 %noise%start_again:45
%odometer%on_way:67 %odometer%shift_it:-45 %odometer%staff:-46 %odometer%who:30 %on_way:-48 %on_way%opening:57
%on_way%place:99 %on_way%question:75 %on_way%refuse:-27 %on_way%smoke_smell:-24 %opening:-213 %opening%question:-43
%opening%staff:-50 %pay_day:-31 %pay_day%season:-28 %phone:-99 %phone%question:30 %phone%refuse:36 %phone%staff:-109
%phone%wrong_one:-61 %place:-142 %place%refuse:30 %place%staff:-23 %place%wrong_one:27 %question:-144
%question%refuse:-72 %question%staff:56 %question%start_again:45 %question%wrong_one:55 %refuse:-95
%refuse%shift_it:124 %refuse%staff:-32 %refuse%thanks:37 %refuse%wrong_one:-23 %season:-52 %shake:-95 %shift_it:-116
%shift_it%staff:23 %shift_it%wrong_one:32 %smoke_smell:-69 %staff%who:53 %staff%wrong_one:28 %start_again:-92
%thanks:-110 %who:-46 %who%wrong_one:36 %wrong_one:-72 @?:231 @car:-27 @confirm:-32 @nothing:30 @odometer:69
@offers:-42 @reading:-177 @time_:-24 @times:-73 @walk_in_will_do:-35 ^_$:37 ^_a:26 ^_about:23 ^_aceptan:62
^_actually:42 ^_after:-27 ^_ahora:-22 ^_al:-26 ^_am:31 ^_and:-90 ^_anda:-26 ^_ando:-34 ^_any:-38 ^_are:110 ^_asap:-28
^_ayuda:-30 ^_ballpark:-60 ^_be:-25 ^_been:-24 ^_bonjour:66 ^_bring:-45 ^_can:-45 ^_cant:-50 ^_car:-59 ^_cobran:-46
^_con:-29 ^_confirmo:26 ^_congratulations:68 ^_cost:-39 ^_couldnt:-23 ^_cuanto:82 ^_de:-115 ^_dejeme:-29 ^_did:141
^_do:-122 ^_does:47 ^_donde:23 ^_en:33 ^_eres:53 ^_es:-128 ^_eso:-28 ^_esta:-80 ^_estan:53 ^_friday:53 ^_get:-45
^_go:-28 ^_good:-33 ^_hablan:82 ^_hacen:55 ^_have:-28 ^_hay:-38 ^_hello:-72 ^_help:-32 ^_hey:167 ^_hi:38 ^_hm:128
^_hmm:57 ^_how:-35 ^_i:-129 ^_id:-24 ^_ill:-47 ^_info:-34 ^_is:109 ^_it:-53 ^_jajaja:46 ^_la:-98 ^_last:-23 ^_let:-27
^_lo:-71 ^_lol:122 ^_los:34 ^_manana:46 ^_mande:61 ^_mi:-35 ^_might:-22 ^_mijo:45 ^_mom:29 ^_monday:26 ^_my:-86
^_need:-24 ^_neither:-27 ^_ni:-41 ^_nobody:-24 ^_not:-53 ^_olvide:38 ^_on:-33 ^_optout:-23 ^_out:39 ^_oye:56
^_para:-67 ^_por:-33 ^_precio:-27 ^_price:-23 ^_puedo:-95 ^_que:93 ^_quien:-25 ^_rain:-22 ^_revoke:-28 ^_saturday:35
^_should:31 ^_sip:-28 ^_sorry:39 ^_steering:-38 ^_still:-62 ^_su:129 ^_take:-37 ^_that:-44 ^_the:-63 ^_there:-83
^_tiene:-39 ^_tienen:44 ^_time:-32 ^_trabajan:56 ^_trae:-45 ^_venden:89 ^_voy:44 ^_want:26 ^_we:-33 ^_wed:25
^_were:-22 ^_what:33 ^_why:-106 ^_will:-55 ^_wipers:54 ^_y:-67 ^_yep:27 ^_yo:-46 ^_you:-237 ^_youre:-23 a:-35
a__can:56 a__card:37 a__casa:52 a__for:-38 a__hora:25 a__noise:-28 a__of:49 a__on:-52 a_bot:65 a_bus:43 a_charge:-38
a_cruise:31 a_day:44 a_gift:38 a_human:-59 a_later:-23 a_meeting:51 a_que:30 a_real:24 a_robot:41 a_shuttle:30
a_tow:24 about_the:28 ac:42 aceite:45 aceptan:152 aceptan_tarjeta:41 actually:41 address:-59 address_$:-63 after:-26
again:54 again_$:86 agendeme:-33 agendeme_$:-32 ahi:87 ahi_$:103 aire:79 aire_$:52 al:-63 algo:-34 alguien:25
alguien_que:25 alignment:-23 all:-69 all_four:-25 all_set:-23 already:-49 also:80 also__you:25 also_do:25 am:52
am_$:-32 am__talking:34 amor:33 an:-49 and:-33 and__are:-84 and__i:28 and__is:-25 and__my:24 and__see:24
and__there:41 and__you:127 and_can:74 and_do:94 and_i:-24 and_is:64 and_the:-29 and_will:24 and_you:-79 anda:-53
ando:-47 anoche:33 anoche_$:42 antes:-58 antes_$:-27 antes_de:-28 any:-61 anymore:44 anymore_$:53 anything_$:56
app:42 appointment:-25 aqui:23 aqui_$:49 aqui_no:-22 are:49 are_$:-74 are__a:69 are__again:54 are__guys:-51
are__on:-40 are__still:30 are__there:-23 are_we:47 area:25 arm:-33 around:-25 arranca:22 arreglan:83 as:-41 as_i:23
asap:-31 asap_$:-25 aseguranza:44 asi:-99 asi_$:-64 at:-58 at_$:-38 at_all:76 at_and:-22 at_or:-24 auto:69
automated:28 automatica:26 away_$:-22 away_from:47 ayuda:-32 ayuda_$:-28 back_$:37 ballpark:-62 ballpark_$:-61 be:37
be_a:28 be_the:25 be_there:-70 before:-25 before_$:34 bendiciones:-25 bendiciones_$:-22 best:-27 best_$:-26 bici:32
bien:-68 bien_$:-56 bike:56 blocked:73 boat:29 bonjour:66 bonjour__ne:66 bonjour_je:66 bot:77 bot_$:53 brakes:-32
brand:50 bring:125 bring__own:48 bring_it:-44 bring_my:85 btw:24 bus:24 bus_stop:26 but:-22 but__you:36 but_do:35
buy:33 by:-80 by__mall:-27 by_the:-55 cafe:28 call:-51 call_my:-61 calor:22 cambie:-22 cambio:-24 can:102
can__bring:78 can__call:-25 can__check:82 can__come:-49 can__do:-119 can__drop:57 can__give:-23 can__me:-27
can__pick:28 can__send:62 can__speak:-35 can__talk:-38 can__wait:-25 can_do:-63 can_i:41 can_my:200 can_see:-23
can_we:-51 can_you:81 cant_do:-32 car_$:-38 car__the:37 car_is:-54 card:47 cards:50 cards_$:50 carro:-95 carros:130
cars:35 cars_$:61 casa:78 casa_$:36 cash:48 cat:37 celular:23 cerca:35 change__appointment:37 charge:-86 charge_$:-41
charge_for:-39 check_$:-35 check_my:56 cierto:23 cita:-76 cita_$:-44 claim:27 claim_$:27 clic:67 click:73 close:-24
cobran:-57 cobran_por:-26 code:80 coffee:29 comadre:64 come_at:-23 company:-23 compran:49 comprends:48
comprends_pas:48 con:-50 con_mi:-38 con_ustedes:-50 congratulations:68 congratulations_you:51 cosa:22 cosa_$:23
cost:-49 cost_$:-46 could:49 could__be:54 couldnt:-29 covered:-25 cruise:31 cuanto__y:60 dan:185 day:-62 day_$:-77
days:-32 de:-29 de_aqui:-28 de_espera:63 de_la:54 de_las:-24 de_llantas:60 de_que:-48 de_una:-43 de_ustedes:-22
dejar:46 dejeme:-29 del:25 del_carro:-22 deposit:45 deposito:23 descuento:-81 dia:-88 dia_$:-58 did:170 did__get:26
did__leave:57 did_i:68 did_it:-28 did_my:56 did_you:87 digo:-41 digo_$:-23 dijo:28 dinner:64 direccion:-24
direccion_$:-29 directions:-41 dis:-29 dis_$:-29 do:71 do_$:-129 do__and:22 do__charge:-54 do__close:-50 do__do:94
do__get:-28 do__guys:115 do__have:65 do__keep:-35 do__know:-66 do__need:40 do__open:-65 do__own:-42 do__sell:72
do__shut:-28 do__take:117 do__th:-24 do__use:34 do__work:39 do_friday:-40 do_i:-37 do_instead:-24 do_it:-80 do_my:-42
do_the:-46 do_they:-24 do_this:-23 do_you:437 does:60 does__matter:29 does_it:67 dog:78 dogs:40 domingo:-23 don:23
donde:76 done_$:53 dont:-29 door:60 door_$:67 down:-38 down_$:-34 drive:-44 driving:103 driving_with:100 drop:86
drop__car:40 drop__off:42 drop_it:71 drop_off:24 e:31 earlier:-36 early:-53 early_$:-40 echeme:-22 eh:41 eh_$:41
el:27 el__a:-28 el__anoche:46 el__se:-35 el_aire:102 el_carro:-76 el_dia:-40 el_lunes:-28 el_martes:-36 el_precio:-23
el_recibo:66 email:62 empty:39 en:-43 en__mismo:-24 en__momento:32 en__sala:48 en_dos:25 en_el:-34 en_este:44
en_la:-23 engine:-32 entendi:43 era:57 era_el:22 era_para:35 eres:45 eres__o:32 es:-80 es_$:60 es__un:23 es_de:-42
es_el:27 es_eso:-26 es_gratis:-43 es_una:54 es_urgente:-22 es_usted:27 es_y:43 esa:-28 escribo:73 eso:-23 eso_$:-22
espacio:-28 espanol:31 espera:62 espera_$:52 esperar:-63 esperar_$:-44 espero:-30 esposa:-23 esta:-55 esta_bien:-30
esta_muy:-23 estan:27 estan_$:-26 este:38 este_momento:33 estimate:-28 estimate_$:-23 esto_$:-37 estoy__el:-22
estoy_bien:-28 estoy_de:-28 estoy_en:-37 estoy_manejando:109 ex:-29 factura:79 favor:-37 favor_$:-26 feels:-29
fell:48 fin:-30 find_a:23 fine:-30 finish:-44 first:-36 first_$:-26 fix:54 flies:22 floor:25 for:-32 for_$:-31
for__inspection:-22 for_that:-23 for_the:29 forward:-22 foto:90 four:-36 four_$:-32 free:-50 free_$:-58 frenos:-55
frenos_$:-49 friday_$:-60 from:33 from_my:59 fue_el:44 fuga:-28 game:106 game_$:40 gano:47 garantia:50 get:-26
get__a:-48 get_for:-22 get_me:-35 get_my:-43 get_the:27 gift:66 gift_card:44 give:-29 give_me:-28 go:26 going:-32
going_on:-42 gone_$:-24 good:-31 got_$:-25 got_a:22 gracias_$:-33 gracias_por:23 gratis:-46 gratis_$:-41 grua:71
grua_$:27 guy_with:22 guys_$:-56 guys_do:85 guys_have:-24 guys_open:-29 guys_take:46 hablan:85 hablar:-32
hablar_con:-44 hablo:-23 hace:-44 hacen:150 had:-33 hago:-26 hasta:-26 have__be:22 have__been:28 have__do:-30
have__wrong:-34 have_a:68 have_anything:-27 have_loaners:30 have_my:-30 have_the:-42 have_to:-41 have_you:46 hay:86
hay__en:36 he:-32 hello:-72 help_$:-37 her:-22 here:82 here_$:45 hey:166 hey__is:46 hi:35 hijo:30 hiring:102 hit:-27
hitch:39 hm:128 hmm:57 hola:24 home:27 hora__y:30 horario:-24 hospital:-24 how:-60 how__i:-34 how__you:-56 how_bad:26
how_do:-87 how_long:50 huh:51 huh_$:54 husband:-32 i__a:44 i__all:-25 i__at:-24 i__bring:-27 i__in:-25 i__it:-28
i__my:82 i__need:-32 i__off:24 i__say:23 i__there:-34 i__to:133 i_am:62 i_bring:72 i_can:-71 i_cant:68 i_come:-74
i_do:-57 i_drop:30 i_got:23 i_know:-73 i_leave:77 i_mean:36 i_need:131 i_pay:43 i_speak:-36 i_talk:-38 i_talking:34
i_text:22 id:-41 idea:37 idea_$:60 if_my:42 ill:-77 ill__there:-26 ill_be:-31 ill_see:22 im:-23 im__a:37 im__out:49
im__with:98 im_driving:101 im_good:-24 im_in:26 im_not:-29 im_ready:-46 imagen:107 in_$:-44 in__waiting:27 in_a:69
in_my:-41 in_tuesday:-22 in_your:30 info:-58 info_$:-58 ingles:88 into:57 into_the:55 invoice:74 invoice_$:80 ir:44
ir_mi:31 is:76 is_$:40 is__a:63 is__car:116 is__free:-33 is__going:23 is__inspection:35 is__labor:-23 is__ok:40
is__really:-31 is__the:115 is__urgent:-30 is__wifi:147 is_a:-120 is_gone:-25 is_it:-57 is_making:-37 is_my:226
is_on:61 is_the:67 is_there:145 is_this:-50 is_your:25 it:-71 it__and:58 it__for:27 it__if:49 it__me:26 it__to:34
it__under:-25 it_a:-30 it_again:85 it_is:-30 it_matter:29 it_now:-22 it_off:44 it_ok:45 it_quick:-22 it_urgent:-30
jaja:46 jaja_$:34 jajaja:53 je:150 je__comprends:48 je_ne:84 jefe:-23 juego:52 just:-67 keep:-41 keep__me:-26
keep_texting:-27 key:61 key_$:29 knock:33 know:-87 know_you:-74 la__de:45 la__del:29 la__el:-36 la__es:24 la__o:34
la__ustedes:34 la__vez:30 la_aseguranza:22 la_bici:23 la_casa:55 la_cita:-47 la_factura:81 la_garantia:33
la_llanta:-36 la_llave:27 la_luz:-34 la_pieza:28 la_revision:-28 la_sala:62 labor:-31 lady:29 laptop:26 laptop_$:26
las_$:-53 las_llantas:-27 las_llaves:28 last_night:30 late:-23 late_$:-24 later_$:30 le__a:-50 le__la:23 le_gusto:27
league:29 leave:74 leave_my:46 leave_the:29 leaving:-23 left:-23 lentes:63 let:-26 let_me:-27 lets:-24 light:-54
light_is:-28 like:-60 like_a:-25 link:39 list:-47 list_$:-36 llanta:-39 llantas:81 llantas_$:-27 llave:27 llaves:28
llego:33 llegue:26 llegue_a:24 llevar:109 llevar__mi:31 llevar_a:30 llevarlo_$:-29 llevo:-27 lo:-122 lo__a:-51
lo__la:38 lo__mi:-24 lo_puede:30 lo_puedo:-30 loaners:29 lobby_$:26 location:-86 location_$:-46 lol:145 lol_$:108
lol_no:42 long:30 long__you:33 los_ninos:-33 love:29 luego:33 luego_$:76 lugar:-37 luz:-40 machine:50 machine_$:52
mailbox:25 main:-34 making:-44 making_a:-27 mal:-31 mal_$:-34 mama:42 mama_$:35 manana_$:-40 mandan:116 mandar:26
mandarme:-26 mande:63 mande_$:66 manden:-39 mando:30 manejando:51 manejando_$:-36 maquina:61 marca:53 marcar:-26
martes:-31 martes_$:-31 mas:-66 mas_$:-40 mas_tarde:32 matter:25 may:34 mayo:-22 me:-115 me_$:-56 me__el:94
me__mandar:39 me__marcar:-26 me__you:25 me_a:-57 me_again:-38 me_fue:37 me_i:27 me_mandan:103 me_off:-31 mean_$:37
mecanico_$:-22 meeting:47 mensaje:85 mensajes:-84 mensajes_$:-49 mes:-27 message:132 message_$:46 message__i:34
message_me:-40 message_when:34 messages:-52 messages_$:-34 mi:30 mi__con:25 mi__se:-24 mi_cita:-31 mi_esposa:-23
mi_hijo:34 mientras:29 mientras_$:28 might:-25 mijo:36 mil:-53 millas:-29 min:-24 mio:31 mis:46 mismo:-22 mom:90
momento:28 monday_$:-36 more:-57 morning:-23 motor:-22 motorcycles:32 motorcycles_$:32 mucho:-54 must:-32 muy:-80
muy_mal:-24 my:61 my__did:-23 my__done:65 my__drop:82 my__fell:55 my__go:59 my__in:28 my__is:-22 my__key:26
my__oil:25 my__one:31 my__says:-44 my__there:57 my__too:96 my__will:-31 my_arm:-29 my_car:31 my_dog:60 my_husband:-30
my_info:-23 my_invoice:44 my_kid:25 my_number:-66 my_old:24 my_own:29 my_phone:42 my_son:37 my_spare:31
my_sunglasses:55 my_warranty:27 my_wife:-26 nada:-35 name:-31 nao:94 ne:84 ne__pas:84 ne_comprends:48 necessary:-24
necessary_$:-24 need__bring:94 need__change:45 need_a:-26 need_that:-52 need_to:144 neither:-27 ni:-90 night:89
night_$:50 ninos:25 ninos_$:40 no_$:-53 no__at:77 no__here:-41 no__me:24 no_arranca:22 no_estoy:44 no_gracias:38
no_idea:73 no_lo:36 no_manden:-23 no_noise:77 no_pero:39 no_se:32 no_soy:-24 no_thanks:38 nobody:-40 noise_$:-41
noise__all:78 noise_at:78 nomas:-49 non:33 north:-32 not:-43 not__me:-48 not_be:56 now:-59 now_$:-47 number:-44
number_$:-55 o:114 o__es:30 o_no:41 o_que:24 obrigado:69 ocupo:25 of:26 of__do:65 of_my:44 of_oil:50 of_the:38
of_you:-29 off_my:22 off_the:44 off_your:-27 office:84 office_$:30 oi:34 oil:61 oil_$:41 ok:33 ok__my:40 ok__the:26
ok_if:51 old:34 olvide:38 on:-33 on_$:-32 on__th:65 on__the:47 on_for:44 on_it:36 on_my:-50 on_the:-32 open:-115
optout:-23 optout_$:-23 or:26 or_$:-24 otra:25 otra_vez:24 otro:-22 out:27 out_$:-31 out__the:53 out_of:55 over:-23
own:24 own_oil:25 oye:75 pa:36 pagar:40 pagos:37 papel:26 papel_$:26 paperwork:47 paperwork_$:47 para_cuando:-38
para_que:-24 parking:34 part:30 partes:68 partes_$:61 partido:96 parts:28 pas:109 pas_$:38 pasada:23 pay:38 pedal:-22
perdon:26 person:-23 person_$:-44 peso:25 phone:37 phone_$:55 pickup:-37 pickup_$:-23 picture:34 pieza:38 place:27
please_$:-54 pm_$:-35 pm_and:24 podria:26 ponen:69 por:-76 por_favor:-27 possible:-24 practice:24 precio:-58
precio_$:-47 prefiero:-25 prestan:49 price:-107 price_$:-31 puede:31 puede_$:-54 puede__mi:89 puede_esperar:-47
puede_ir:39 pueden_mandar:34 puedo__a:31 puedo_llevar:73 puedo_seguir:-67 pues:-24 put:22 put_on:36 q:42 que_$:223
que__de:56 que__eso:-30 que_es:-48 que_hacer:22 que_hora:27 que_le:-48 que_tiene:-36 quedo:24 quick:-38 quick_$:-41
quien:28 quien__el:38 quien_es:-36 quien_me:33 quienes:-37 quienes_son:-37 quieren:-25 quote:-37 radio:29 rain:-23
rain_check:-22 ready:44 ready_$:63 real_person:25 really:-134 recibo:87 recoger:-25 red:28 rent:33 replaced:-38
reply:76 report:40 respondo:75 respuesta:26 respuesta_automatica:26 revisan:109 revision:-29 revoke:-28 revoke_$:-23
right:59 right_now:70 ring:-53 ring_me:-38 robot:112 robot_$:87 rock:-24 room:24 room_$:50 ruedas:22 sabado_$:-26
saben:51 sala:119 sala_$:25 sala_de:68 sale:30 same:-44 same_day:-60 sat:-27 say:-23 says:-60 schedule:-30 se:-76
se__fue:36 se_lo:-31 se_me:39 see:48 see__message:39 see_the:38 see_your:38 seguir:-58 selected:27 selected__a:27
selected_for:27 sell:81 sell_used:37 semana:-30 send:79 set:-44 shop:-71 shop_$:-24 shop_is:-23 should:24 should_i:31
shut:-30 shuttle:36 shuttle_$:29 si:-43 si_llego:28 si_lo:-35 si_pero:-39 si_puedo:26 side:-56 side_$:-44 sigo:-31
siguen__el:-25 siguen_en:-27 silla:31 silla_de:31 sip:-28 sip_$:-28 sirve:33 slot:-28 slot_$:-25 snow:77 so:-76
sold:-27 someone__me:22 son:-73 son_$:-55 son__it:52 sorry:30 sorry_$:-24 sorry_i:76 soy:-40 spare:31 spare_key:23
speak:-51 speak_to:-29 speak_with:-22 spring:-34 spring_$:-27 squeaking:52 st_$:-33 station:28 steering:-41 still:30
still__the:-34 still_good:23 stop:-37 street:-23 street_$:-30 su:195 suena:-23 sunday:-24 sunglasses:55 supposed:31
supposed_to:31 t:-31 take:31 take__off:-44 take_checks:23 take_me:-33 take_my:-24 talk__a:-45 talk_to:-57 talking:32
talking_to:34 taller:-32 tambien:137 tambien_$:75 tan:-32 tank:23 tap:24 tarde:24 tarde_$:25 tarjeta:72 tarjeta_de:34
tax:-29 te:124 te__luego:77 te_escribo:79 tech:-37 tell_me:-28 texting:-39 texting_me:-29 textos:-34 textos_$:-24
texts:-24 th_$:23 than:-23 thank:-37 thank_you:-36 thanks:30 thanks__you:31 that:-42 that_$:-86 that_is:-44
that_you:24 the:-32 the_$:30 the__at:-22 the__before:43 the__do:30 the__in:-22 the__last:42 the__off:30 the__on:42
the__person:-25 the__room:31 the__side:-45 the__that:34 the__with:44 the_address:-29 the_best:-26 the_door:68
the_game:101 the_invoice:29 the_messages:-26 the_nd:22 the_new:26 the_night:34 the_north:-28 the_office:52
the_part:31 the_truck:-32 the_trunk:40 the_waiting:44 the_wrong:-41 them_$:-24 then:-31 then_$:-23 there:28
there_$:39 there__a:-51 there__charge:-39 there__to:46 there_a:44 there_is:-94 these:-48 these_messages:-25 think:-29
this:-72 this_$:-26 this__the:-22 this_a:79 this_is:-30 through:37 through_$:57 thurs:-36 thursday_$:-27 tiene:-117
tiene_$:-24 tienen:112 tienen_$:-46 tienen__de:84 tienen__el:-51 tienen__para:44 tienen_lugar:-46 tienen_wifi:37
time_$:-48 time__it:85 time__you:-73 time_do:-71 time_is:59 tirando:-22 tire:-43 tires_$:-30 to:-32 to_$:-27 to__a:23
to__anything:76 to__it:-35 to__the:40 to_a:-27 to_be:62 to_bring:90 to_change:40 to_check:-22 to_claim:29 to_do:-28
to_drive:-39 to_the:-32 todavia:34 today:-48 today_$:-31 todo:-48 todo_el:-27 toma:-27 tomorrow_$:-38 too:48
too_$:118 took:-22 tortillas:67 tow:85 tow_$:43 tow_hitch:26 trabajan:77 trabajo:-24 trae:-32 trailer:53 trip:77
truck:-42 trunk:40 trunk_$:40 tu:50 turned:56 twice:-27 twist:-23 twist_my:-23 two:-31 typing:31 uh:-26 un_robot:42
una:66 una__o:40 una_maquina:57 under:-39 under_my:-26 unos:-23 up:-94 up_$:-32 urgent_$:-29 urgente:-25 us:-22
usadas:56 use:56 used:52 used_cars:34 ustedes:48 ustedes_$:-97 vacaciones:-25 venden:174 vendi:-36 vendimos:-23
verdad_$:24 vez:47 vez_$:36 vidrios:45 viene:-26 viernes_$:-62 voice:23 voy_a:-48 voy_manejando:42 wait:-40
wait_$:-26 waiting:38 waiting_room:44 walk:30 want:36 warranty:36 warranty_$:-26 was:59 was__again:85 was_it:83
was_just:-22 was_that:54 wash:22 way:-24 we_do:-35 weather:22 well:24 well_$:27 went:-30 were:-44 what_$:76
what__a:-23 what__are:-23 what__do:-57 what__is:29 what__this:-30 what__was:115 what__you:-160 what_a:25 what_did:-60
what_do:-90 what_time:116 wheel:-35 when__you:-31 when_do:-48 where__you:-34 where_are:-33 where_is:29 which_shop:-23
while:30 who__the:108 who__this:-38 who__you:-56 who_are:-54 who_dis:-29 who_is:-28 why:-116 why_$:-42 why__you:-68
why_do:-82 wife:-45 wife_$:-31 wife__it:31 wifi:230 wifi_$:119 will__it:-52 will__there:-22 will_bring:-38
will_do:-48 will_see:24 will_you:32 window:75 wipers:56 with_me:28 with_you:-22 won:110 work:-44 work_$:-32
work_on:54 worked:23 working:29 would:-24 wrong:-46 wrong_person:-34 y:31 y_$:-27 y__ahi:-24 y__es:-27 y_el:-38
y_tambien:25 y_tienen:38 ya:-63 ya_$:-26 ya__mi:72 ya_esta:44 ya_no:-32 yep:37 yep__you:27 yes:-27 yes_$:-39
yes__am:-23 yes__you:58 yes_do:58 yes_i:-39 yo:-37 you:136 you_$:-100 you__a:168 you__anything:-28 you__before:-31
you__bot:36 you__by:-22 you__checks:23 you__do:89 you__fix:33 you__for:-49 you__have:-30 you__in:37 you__is:27
you__it:-23 you__loaners:25 you__me:-75 you__my:-56 you__on:77 you__open:-34 you__take:42 you__text:-28 you__the:95
you__today:-22 you__used:52 you__what:-25 you_a:81 you_are:-70 you_call:-70 you_can:-62 you_charge:-54 you_check:82
you_close:-52 you_do:58 you_got:36 you_have:48 you_keep:-34 you_need:-57 you_on:-45 you_open:-73 you_pick:28
you_put:53 you_see:54 you_sell:81 you_send:81 you_shut:-29 you_take:90 you_tell:-27 you_text:36 you_then:-27
you_there:35 you_use:37 you_work:39 your:69 your__is:61 your__when:34 your_message:43 your_the:-25 youre:-37
"""
