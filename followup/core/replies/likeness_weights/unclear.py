"""What speaks for and against `unclear`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "unclear"
BIAS = -56
WEIGHTS = """\
#aben:70 #abla:33 #able:-27 #ablo:-26 #abor:-34 #abri:25 #acac:-29 #acce:32 #acci:26 #aced:-46 #acei:48 #acen:161
#acep:162 #ache:25 #achi:63 #actu:126 #adas:36 #addr:-63 #adel:-32 #adio:29 #ador:140 #ados:33 #adre:48 #afte:-42
#agai:53 #agar:50 #agen:37 #ages:-61 #agos:37 #agua:-70 #ague:39 #ahor:-26 #aigo:-36 #ailb:28 #aile:83 #aire:71
#aiti:45 #ajaj:88 #ajan:52 #ajes:-86 #akes:-68 #alam:34 #alan:36 #aler:-29 #algo:-58 #algu:44 #alia:30 #alie:-32
#alin:27 #alki:27 #alla:-25 #alle:-65 #allo:31 #allp:-69 #ally:-78 #almo:-26 #alon:-31 #alor:26 #alre:-60 #alri:-27
#also:88 #amag:-27 #amal:33 #amar:-31 #amat:38 #ambi:44 #amen:-35 #amor:47 #amos:-55 #anas:69 #ance:-29 #anci:32
#anda:38 #ando:-97 #ands:-28 #anej:67 #aner:26 #ange:-28 #angl:46 #anne:-28 #anoc:35 #anol:34 #anos:73 #ansm:35
#ante:-40 #anti:71 #anty:37 #anym:47 #anyo:56 #apel:27 #apid:-34 #appo:-29 #apto:35 #apun:-25 #aqui:76 #aran:79
#ards:65 #aren:-34 #arge:-75 #aria:-37 #arje:97 #arki:38 #arle:49 #arli:-43 #arly:-69 #arme:-90 #aron:-61 #arra:40
#arre:28 #arri:51 #arro:61 #arse:37 #arta:39 #arti:99 #arts:42 #asap:-33 #asdf:296 #asdk:142 #aseg:61 #ases:32
#asse:28 #asta:-58 #aste:76 #atan:84 #atch:-54 #ater:60 #atic:106 #atis:-56 #ativ:-50 #ator:-51 #atra:-40 #atul:73
#auto:215 #avad:36 #aves:28 #avia:39 #avin:-35 #away:25 #ayme:73 #babe:38 #baja:36 #ball:-64 #bano:84 #bate:30
#batt:-25 #befo:-26 #bend:-33 #best:-29 #bici:46 #bien:78 #bike:83 #birt:26 #blan:94 #blar:-44 #blem:-28 #bles:-44
#bloc:61 #boat:54 #body:-59 #bonj:95 #book:-31 #brak:-50 #brig:88 #brin:130 #bris:29 #bscr:-33 #buen:-31 #caci:-28
#cade:30 #cafe:43 #call:-77 #calo:26 #camb:-97 #came:-58 #cant:30 #canz:-32 #card:110 #carr:43 #cars:69 #cart:39
#casa:96 #cash:55 #cati:-62 #ceit:48 #cell:-28 #celu:27 #cept:157 #cerc:38 #chai:42 #chan:-34 #char:-87 #chea:-27
#ched:-40 #chem:-27 #cher:31 #ches:25 #chin:33 #cial:-53 #cibe:35 #cibo:93 #cita:-85 #cked:100 #cker:-27 #ckin:-34
#ckup:-50 #clai:27 #clea:39 #cles:39 #clic:126 #clim:36 #clos:-51 #cobr:-70 #code:85 #coff:30 #coge:-25 #coma:70
#comp:106 #cond:30 #cong:83 #cont:48 #corn:38 #cosa:30 #cost:-90 #cove:-36 #cred:125 #crui:32 #cted:25 #ctic:25
#ctio:-38 #ctri:67 #ctua:43 #ctur:130 #cuar:-29 #cubr:25 #cuen:-79 #cupo:48 #curr:63 #cycl:66 #dama:-27 #darm:-29
#date:40 #davi:40 #days:-68 #ddre:-63 #deal:-26 #deci:-32 #dedo:60 #deja:49 #deje:-61 #dela:-29 #dele:-43 #deli:61
#delo:-29 #deme:-59 #depo:78 #desc:-102 #deta:43 #didn:-26 #dies:52 #digo:95 #dijo:33 #dimo:-33 #dinn:93 #dire:-75
#disp:43 #dist:85 #dito:104 #dler:28 #does:53 #dogs:47 #domi:-30 #dond:81 #dont:-42 #door:55 #dora:59 #dore:56
#down:-62 #drai:-28 #dran:34 #dres:-79 #drio:51 #driv:45 #drop:103 #dshi:26 #dule:-42 #eaci:40 #eage:-29 #eagu:33
#eaki:35 #eall:-140 #eape:-26 #eard:27 #earl:-115 #ease:-49 #eats:31 #eave:63 #eavi:-26 #eces:-69 #eche:29 #echi:-30
#ecia:-97 #ecib:121 #ecin:28 #ecio:-92 #ecoj:31 #ecte:27 #ectr:67 #edal:-28 #edan:-30 #edes:57 #edit:123 #edul:-42
#eels:-32 #eena:38 #eeri:-42 #eeti:59 #efie:-31 #efor:-26 #egla:80 #egue:29 #egui:-66 #egur:89 #eite:50 #eith:-49
#ejan:96 #ejar:57 #ejas:25 #ejem:-34 #ejen:-27 #elan:-39 #elec:95 #eliv:64 #elle:27 #ello:-96 #else:-35 #elul:27
#emai:97 #eman:-43 #emio:100 #empr:-71 #empt:43 #enag:38 #enco:-27 #ende:172 #endi:-39 #endo:25 #ends:57 #enen:139
#enes:-31 #engi:-38 #enme:-89 #enos:-66 #enta:28 #ente:47 #enti:-44 #entl:59 #ento:-59 #ents:45 #epai:34 #epla:-38
#eply:86 #epos:76 #epta:172 #equi:-30 #eran:-29 #erar:-73 #erca:36 #ered:38 #eren:-61 #eres:41 #eria:39 #erin:-48
#erio:-34 #erlo:-27 #erni:-26 #erst:49 #erti:58 #erwo:51 #escr:67 #escu:-81 #esda:-31 #esel:48 #espe:-68 #espo:66
#essa:46 #esta:54 #esto:-38 #etai:43 #eter:-60 #ethe:27 #etin:54 #evar:102 #even:-50 #ever:-105 #evis:35 #evok:-34
#exam:68 #expl:-34 #exti:-49 #exto:-39 #exts:-28 #fact:95 #feel:-32 #fell:53 #fere:-25 #ffee:30 #ffic:79 #ffle:32
#fica:26 #fice:95 #fina:34 #fine:-29 #fini:-59 #firs:-41 #flie:26 #fona:-27 #fore:-41 #foto:102 #four:-41 #free:-58
#fren:-97 #frij:37 #from:37 #fron:-25 #fter:-42 #fuga:-29 #gado:102 #gain:53 #game:80 #gana:82 #gano:50 #gara:60
#gato:25 #gend:-86 #ghts:-32 #ghty:-25 #gift:72 #gine:-39 #give:-32 #glan:84 #glas:65 #gles:121 #glis:25 #goin:-41
#good:-35 #grab:27 #grad:-29 #grat:25 #grea:-30 #grua:79 #gual:-34 #guan:-28 #guar:70 #guie:49 #guir:-63 #gura:61
#guro:28 #hace:101 #hago:-30 #haha:67 #hair:33 #hanc:-32 #hank:-33 #harg:-82 #hast:-30 #hday:26 #head:-41 #heap:-26
#hedu:-42 #hell:-80 #heme:-27 #here:128 #hese:-52 #hiel:43 #hile:36 #hina:-30 #hine:54 #hing:-34 #hink:-39 #hiri:103
#hitc:52 #hola:31 #hole:-38 #home:43 #hone:33 #hora:-67 #hosp:-25 #hous:-27 #hrou:37 #huma:-37 #hurs:-59 #husb:-39
#hutt:43 #hybr:26 #iben:39 #ible:-33 #icat:30 #icie:-28 #icke:-25 #icku:-42 #icos:65 #ictu:46 #idea:53 #ider:27
#idnt:-26 #idri:51 #ieja:26 #ield:36 #iemp:-39 #iend:31 #iene:-39 #iere:-36 #iero:-33 #iese:53 #ieza:51 #ific:33
#igad:76 #igua:-39 #ilbo:28 #ilen:31 #iler:73 #illa:59 #imag:177 #imat:-31 #imit:28 #imos:-36 #impi:55 #indo:76
#inds:25 #inea:37 #ines:39 #info:-57 #ingl:110 #ingo:-46 #ingu:-31 #inis:-56 #inne:92 #inos:27 #insp:43 #inst:46
#intm:-27 #into:61 #invo:75 #ione:54 #ions:88 #ious:-42 #iper:75 #ippe:-35 #irec:-74 #irin:114 #irma:-34 #irst:-41
#irth:26 #irve:47 #isan:107 #isar:-33 #isit:-31 #ista:-33 #iste:49 #itch:36 #ited:28 #ithe:-52 #itin:33 #itor:32
#itte:25 #iver:49 #ivin:82 #izza:30 #jaja:207 #jalo:-26 #jefe:-28 #jeje:66 #jeme:-32 #jeta:97 #jour:79 #jueg:88
#just:-84 #keep:-47 #know:-95 #labo:-33 #lady:30 #laim:27 #lain:-38 #lant:-31 #lapt:36 #lari:38 #lass:50 #lati:65
#lava:54 #lave:69 #lbox:28 #lcan:-32 #ldnt:-37 #lean:49 #leas:-31 #leav:43 #lect:95 #left:-28 #legi:-34 #lego:37
#legu:28 #lenc:37 #lent:45 #lers:41 #less:-52 #leva:92 #levo:-31 #lgui:29 #lick:41 #lien:-49 #lier:-40 #lies:34
#ligh:-76 #like:-87 #limp:48 #ling:-28 #link:39 #list:-70 #live:33 #lkin:27 #llam:-71 #llan:34 #llas:32 #llav:70
#lleg:75 #llev:78 #llpa:-69 #loan:36 #loca:-103 #lock:54 #loor:26 #lose:-36 #lost:-25 #love:81 #lowe:31 #lpar:-69
#lrea:-60 #lrig:-27 #lueg:30 #luga:-43 #lula:27 #mach:56 #madr:62 #mage:150 #mail:92 #maki:-36 #male:31 #mama:47
#mana:-53 #mand:141 #mane:31 #maqu:59 #marm:-35 #mart:-41 #mati:88 #matt:36 #mayo:-34 #mber:-36 #mbia:-33 #mbie:107
#mbio:-30 #mbre:25 #meet:65 #memb:27 #ment:40 #meri:28 #mess:59 #mete:-25 #mien:44 #mier:-28 #migh:-30 #mijo:40
#mile:-41 #mill:-44 #mind:-37 #ming:-63 #misi:42 #miss:-25 #mite:28 #moni:28 #moto:112 #move:-55 #mowe:30 #mpan:-35
#mpar:42 #mpia:55 #mple:73 #mpra:41 #mpty:45 #mput:35 #much:-75 #must:-40 #nada:-41 #nage:29 #name:-57 #nanc:37
#nazo:-27 #nced:36 #ncel:-30 #ncon:-36 #ndam:-28 #ndan:122 #nday:-42 #ndem:-43 #nden:144 #nder:-48 #ndim:-29 #ndow:90
#ndsh:26 #neac:40 #nece:-55 #neit:-31 #neja:83 #ners:31 #nest:-27 #neve:-36 #nged:-27 #ngin:-38 #ngla:105 #ngle:108
#ngra:81 #ngun:-29 #nigh:70 #ning:-57 #nino:40 #nion:43 #nish:-73 #njou:95 #nner:68 #nobo:-47 #noma:-54 #none:-33
#nort:-36 #noth:-30 #noti:26 #nsen:-25 #nsmi:35 #nsor:25 #nspe:43 #nste:29 #ntas:82 #nter:-34 #ntes:51 #ntia:66
#ntly:59 #ntme:-27 #ntra:85 #nuev:-59 #numb:-66 #nvoi:78 #nymo:47 #oane:35 #obod:-47 #obot:134 #obra:-64 #obri:76
#ocat:-106 #ocke:63 #ocup:45 #odav:40 #oday:-63 #oddl:28 #odri:25 #offe:53 #offi:95 #oger:-32 #oice:98 #oing:-45
#oint:-42 #okin:-33 #olan:-28 #olar:35 #omad:72 #omas:-57 #omat:144 #ombr:26 #omer:35 #omet:-29 #omew:31 #omin:-52
#ompl:-33 #ompr:108 #ompu:41 #onaz:-27 #onde:108 #ondo:79 #onen:77 #ones:-25 #ongr:81 #onjo:93 #onta:-25 #ontr:82
#ooki:-35 #oone:-34 #oost:34 #open:-168 #orar:-28 #orcy:41 #ords:25 #ores:81 #orio:-33 #orke:26 #orki:33 #orma:-38
#orme:37 #orra:31 #orre:-54 #orry:30 #orse:-29 #orth:-41 #orti:63 #osit:69 #ospi:-25 #ossi:-30 #oste:29 #otal:-32
#oter:25 #othe:-26 #otor:43 #otos:55 #otra:26 #otro:-32 #ouch:32 #ound:-44 #oung:28 #oure:-48 #oved:29 #over:-118
#owed:35 #ower:33 #pack:61 #paga:44 #pago:33 #pano:34 #pape:74 #park:-34 #part:211 #paym:73 #peak:-60 #peci:-75
#peda:-29 #pedi:30 #pera:-44 #pero:-31 #perr:61 #pers:91 #perw:51 #peso:37 #phon:45 #pict:46 #pido:-31 #piez:51
#pint:34 #pita:-26 #pizz:30 #plai:-36 #plan:-25 #podr:27 #poin:-39 #pond:96 #pone:69 #pong:-26 #pons:32 #posa:-25
#pose:32 #posi:65 #pped:-48 #ppin:-27 #ppoi:-29 #ppos:34 #prac:26 #prec:-71 #pref:-40 #prem:100 #pres:55 #pric:-137
#prin:-44 #prop:31 #ptan:195 #ptop:36 #pued:38 #puer:57 #pull:-26 #punt:-30 #quea:40 #ques:35 #quic:-43 #quie:-43
#quin:68 #quit:-62 #quot:-39 #raba:41 #ract:26 #rail:94 #rain:-60 #rake:-48 #rame:-62 #rand:28 #rano:-30 #rant:110
#ranz:47 #rapi:-37 #rari:-32 #raro:-56 #rata:57 #rate:-27 #rati:-66 #rato:-37 #ratu:66 #rcar:-31 #rcyc:41 #rdan:27
#rdon:26 #reac:-33 #real:-148 #recc:-27 #rece:28 #rect:-45 #refi:-31 #regl:59 #remi:78 #reno:-68 #rent:113 #repa:39
#repl:62 #resp:121 #ress:-74 #rest:32 #resu:-28 #revi:43 #revo:-35 #rgen:-44 #rger:36 #ribl:-25 #ribo:76 #rica:32
#rice:-138 #rico:51 #riga:76 #righ:39 #rinc:-25 #ring:95 #rios:48 #riou:-37 #ripp:-38 #rive:-42 #rivi:101 #rjet:97
#rkin:70 #rlie:-43 #rmat:-25 #rned:51 #rnig:-25 #robo:133 #rock:-25 #rong:-52 #ront:-29 #room:67 #ropi:35 #roun:-41
#rran:68 #rreg:48 #rren:45 #rrit:39 #rros:183 #rted:-31 #rtes:51 #rthd:26 #rtid:101 #rtil:75 #ruck:-59 #ruis:32
#runk:45 #rvic:25 #rwor:51 #sabe:76 #saca:-52 #sada:72 #sage:90 #sala:171 #sale:30 #salg:-26 #same:-52 #sary:-27
#says:-67 #sban:-39 #sche:-42 #scue:-75 #sday:-42 #sdkj:142 #sele:28 #sell:97 #sema:-27 #sena:26 #send:74 #sent:36
#seri:-67 #shie:35 #shop:-70 #sibl:-40 #sica:43 #side:-29 #sigo:-36 #sile:31 #sill:34 #sing:-29 #sirv:46 #slot:-29
#smis:35 #snow:82 #sold:-25 #soon:-58 #sorr:35 #spac:-40 #spam:-25 #span:63 #spar:26 #spea:-60 #spec:-34 #sper:-40
#spit:-25 #spon:144 #spos:-39 #spri:-36 #sque:27 #ssag:72 #ssar:-25 #ssed:-45 #sses:51 #ssib:-26 #stal:25 #stan:54
#star:-74 #stat:28 #stee:-43 #stic:-37 #stim:-54 #stop:-70 #stre:-46 #stri:-32 #subs:-33 #suen:-26 #sund:-30 #sung:58
#supp:43 #tail:47 #tala:27 #talk:49 #tall:-38 #tama:33 #tamb:139 #tank:27 #tant:-30 #tard:-36 #tarj:97 #tars:26
#tati:26 #tead:29 #tede:60 #teen:32 #teer:-43 #tely:-27 #temp:-64 #tend:111 #tera:-54 #teri:57 #ters:38 #teve:-26
#text:-98 #than:-60 #that:-45 #thda:26 #them:-27 #then:-39 #thes:-52 #thin:-66 #this:-66 #thro:58 #thur:-48 #tica:43
#tice:28 #tico:34 #tido:85 #tiem:-30 #tifi:53 #till:81 #tima:-44 #time:-47 #tint:28 #tire:-34 #tiva:-26 #tive:-45
#tmen:-27 #toda:-38 #todd:28 #todo:-55 #toma:137 #torc:41 #tore:61 #tori:-27 #tort:85 #tota:-32 #trab:32 #traf:-26
#trai:76 #trar:-30 #trat:57 #tree:-34 #tric:67 #trip:63 #truc:-64 #trun:45 #ttin:-28 #ttle:44 #tual:36 #tula:73
#tura:115 #turb:89 #ture:58 #turn:37 #twic:-32 #twis:-35 #typi:46 #uali:26 #uall:53 #uard:61 #ubsc:-33 #ucho:-62
#udan:25 #ueak:44 #uede:33 #uego:106 #uena:-44 #uent:-85 #uerc:38 #uest:36 #ueva:-40 #ugar:-45 #ught:-37 #uick:-43
#uido:-44 #uien:32 #uina:52 #uise:31 #ulat:73 #uldn:-37 #uman:-37 #umbe:-67 #unda:-34 #unde:-54 #unge:26 #ungl:58
#unio:62 #uote:-39 #upan:32 #uppo:33 #uran:76 #urge:-31 #urne:52 #urre:61 #usad:79 #usan:65 #usba:-39 #used:77
#uste:41 #utom:146 #uttl:43 #vado:27 #vend:203 #veng:39 #veni:-26 #vere:27 #vern:-25 #vers:33 #vert:46 #very:-33
#vete:-26 #vibr:-35 #vida:27 #vide:26 #vidr:51 #ving:33 #visa:70 #visi:-63 #voic:103 #voke:-34 #vuel:-37 #walk:31
#want:42 #ward:-30 #warr:37 #weat:36 #week:-40 #well:26 #went:-36 #were:-47 #when:-29 #whil:36 #wice:-32 #wife:-53
#wifi:270 #wind:116 #wipe:64 #wist:-35 #word:61 #work:58 #worr:-25 #wors:-29 #woul:-29 #wron:-52 #xten:32 #xtin:-49
#xtos:-37 #ybri:26 #ycle:61 #ymen:73 #ymor:47 #your:31 #ypin:46 %again_later:-130 %again_later%agree:-49
%again_later%call_off:42 %again_later%car:-55 %again_later%car_part:46 %again_later%doubt:38 %again_later%lift:-75
%again_later%noise:41 %again_later%on_way:28 %again_later%pay_day:-67 %again_later%phone:86 %again_later%question:33
%again_later%season:-28 %again_later%staff:71 %again_later%start_again:85 %agree:-110 %agree%away:-29 %agree%bring:56
%agree%call_off:65 %agree%car:67 %agree%car_part:60 %agree%do_it:39 %agree%doubt:38 %agree%elsewhere:39
%agree%family:31 %agree%how_long:37 %agree%lift:74 %agree%meaning:30 %agree%money:145 %agree%noise:-62
%agree%pay_day:83 %agree%phone:36 %agree%place:45 %agree%question:-71 %agree%refuse:25 %agree%start_again:36
%agree%thanks:-30 %agree%who:29 %agree%wrong_one:47 %away:-59 %away%bring:-25 %away%call_off:41 %away%lift:-34
%away%message:41 %away%odometer:-30 %away%on_way:-41 %away%phone:53 %away%question:28 %away%shift_it:-34
%away%staff:87 %bad:-201 %bad%car_part:-41 %bad%machine:-27 %bad%question:39 %bad%staff:-64 %bad%who:52 %bring:-89
%bring%busy:-52 %bring%call_off:29 %bring%car:-47 %bring%car_part:38 %bring%do_it:38 %bring%elsewhere:78
%bring%family:116 %bring%leave_me:-47 %bring%money:29 %bring%odometer:49 %bring%opening:43 %bring%place:35
%bring%question:46 %bring%refuse:101 %bring%season:27 %bring%shift_it:43 %bring%who:32 %bring%wrong_one:65 %busy:-41
%busy%call_off:37 %busy%family:44 %busy%odometer:-25 %busy%phone:44 %busy%question:57 %busy%shift_it:40
%busy%staff:40 %busy%who:29 %call_off:-35 %call_off%do_it:-70 %call_off%elsewhere:39 %call_off%fails:44
%call_off%how_long:26 %call_off%money:109 %call_off%noise:31 %call_off%odometer:135 %call_off%on_way:-32
%call_off%phone:38 %call_off%place:27 %call_off%refuse:-40 %call_off%shift_it:28 %call_off%start_again:-78
%call_off%thanks:74 %call_off%who:40 %car%car_part:-65 %car%do_it:44 %car%family:-53 %car%gone_car:-38 %car%noise:-58
%car%phone:58 %car%place:36 %car%refuse:-112 %car%shift_it:-28 %car%staff:107 %car_part:-57 %car_part%fails:-122
%car_part%family:30 %car_part%leak:-55 %car_part%lift:36 %car_part%machine:-40 %car_part%money:-62
%car_part%noise:-34 %car_part%on_way:-69 %car_part%pay_day:66 %car_part%phone:93 %car_part%place:-45
%car_part%season:52 %car_part%shake:-41 %car_part%shift_it:84 %car_part%smoke_smell:-34 %car_part%staff:48
%car_part%start_again:41 %car_part%who:39 %car_part%wrong_one:49 %do_it:-81 %do_it%family:-92 %do_it%leave_me:36
%do_it%lift:-25 %do_it%money:51 %do_it%noise:-25 %do_it%odometer:-44 %do_it%on_way:34 %do_it%question:-33
%do_it%refuse:52 %do_it%season:38 %do_it%staff:110 %do_it%thanks:30 %do_it%who:47 %doubt%odometer:-26
%doubt%shift_it:39 %elsewhere:-77 %elsewhere%family:-28 %elsewhere%money:38 %elsewhere%on_way:36 %elsewhere%phone:-31
%elsewhere%place:-53 %elsewhere%who:81 %elsewhere%wrong_one:66 %fails:-40 %fails%message:39 %fails%place:76
%fails%question:51 %fails%refuse:29 %fails%staff:39 %family:95 %family%how_long:31 %family%message:45
%family%money:31 %family%phone:-31 %family%question:66 %family%shift_it:97 %family%start_again:30 %family%who:-63
%gone_car:-65 %gone_car%odometer:-27 %gone_car%question:49 %gone_car%refuse:55 %gone_car%wrong_one:39 %how_long:-176
%how_long%lift:28 %how_long%money:54 %how_long%opening:-31 %how_long%place:47 %how_long%question:160
%how_long%shift_it:-48 %how_long%start_again:46 %leak:-97 %leave_me:-73 %leave_me%lift:63 %leave_me%on_way:71
%leave_me%refuse:27 %lift:126 %lift%on_way:-41 %lift%place:44 %lift%question:55 %lift%refuse:25 %machine:352
%machine%message:41 %machine%phone:-25 %machine%question:71 %meaning:-137 %meaning%money:32 %message%money:84
%message%refuse:-26 %message%shift_it:75 %message%start_again:-115 %message%who:-29 %message%wrong_one:37 %money:-165
%money%on_way:-48 %money%shift_it:-27 %money%staff:30 %money%who:84 %noise:-32 %noise%question:-55 %noise%refuse:40
%noise%start_again:48 %odometer%on_way:68 %odometer%question:-26 %odometer%shift_it:-56 %odometer%staff:-52
%odometer%who:28 %on_way:-66 %on_way%opening:67 %on_way%place:111 %on_way%question:82 %on_way%refuse:-37
%on_way%smoke_smell:-28 %opening:-298 %opening%question:-56 %opening%staff:-55 %pay_day:-30 %pay_day%season:-41
%phone:-120 %phone%question:31 %phone%refuse:36 %phone%staff:-112 %phone%wrong_one:-70 %place:-160 %place%refuse:32
%place%shift_it:-25 %place%wrong_one:30 %question:-146 %question%refuse:-82 %question%staff:67
%question%start_again:44 %question%wrong_one:63 %refuse:-103 %refuse%shift_it:139 %refuse%staff:-38 %refuse%thanks:40
%refuse%wrong_one:-40 %season:-59 %shake:-112 %shift_it:-112 %shift_it%staff:30 %shift_it%wrong_one:31
%smoke_smell:-81 %staff%who:61 %staff%wrong_one:27 %start_again:-99 %thanks:-151 %who:-50 %who%wrong_one:41
%wrong_one:-80 @?:243 @car:-33 @confirm:-30 @nothing:30 @odometer:83 @offers:-42 @reading:-208 @time:33 @time_:-30
@times:-89 @walk_in_will_do:-32 ^_$:42 ^_a:30 ^_about:26 ^_aceptan:97 ^_actually:49 ^_after:-31 ^_ahora:-25 ^_al:-28
^_am:32 ^_and:-100 ^_anda:-27 ^_ando:-35 ^_any:-49 ^_are:103 ^_asap:-28 ^_ayuda:-37 ^_ballpark:-67 ^_be:-27
^_bonjour:79 ^_bring:-55 ^_cant:-57 ^_car:-66 ^_cobran:-47 ^_con:-34 ^_confirmo:28 ^_congratulations:73 ^_cost:-44
^_could:30 ^_couldnt:-27 ^_cuanto:91 ^_dan:89 ^_de:-116 ^_dejeme:-31 ^_did:151 ^_do:-117 ^_does:71 ^_en:36 ^_eres:76
^_es:-158 ^_eso:-35 ^_esta:-81 ^_estan:58 ^_estoy:25 ^_friday:56 ^_get:-62 ^_go:-30 ^_good:-44 ^_hablan:94 ^_hacen:62
^_have:-33 ^_hay:-42 ^_hello:-79 ^_help:-35 ^_hey:186 ^_hi:43 ^_hm:142 ^_hmm:67 ^_how:-44 ^_i:-155 ^_id:-33 ^_ill:-59
^_info:-41 ^_is:99 ^_it:-69 ^_jajaja:46 ^_la:-107 ^_last:-26 ^_let:-29 ^_lo:-83 ^_lol:124 ^_los:31 ^_manana:52
^_mande:66 ^_me:-31 ^_mijo:49 ^_mom:45 ^_monday:27 ^_my:-90 ^_need:-25 ^_neither:-31 ^_ni:-44 ^_nobody:-29 ^_not:-62
^_olvide:39 ^_on:-27 ^_out:55 ^_oye:62 ^_para:-76 ^_por:-41 ^_precio:-29 ^_price:-40 ^_puede:-27 ^_puedo:-104
^_que:97 ^_quien:-30 ^_revoke:-31 ^_saturday:39 ^_should:34 ^_sip:-27 ^_sorry:39 ^_steering:-40 ^_still:-79 ^_su:145
^_take:-46 ^_that:-52 ^_the:-60 ^_there:-95 ^_this:-34 ^_tiene:-40 ^_tienen:52 ^_time:-40 ^_trabajan:58 ^_trae:-50
^_un:-25 ^_venden:96 ^_voy:48 ^_want:32 ^_we:-36 ^_wed:28 ^_well:42 ^_what:34 ^_who:26 ^_why:-112 ^_will:-60
^_wipers:59 ^_y:-71 ^_ya:-31 ^_yep:30 ^_yo:-51 ^_you:-286 ^_youre:-31 a:-29 a__can:64 a__card:41 a__casa:59
a__for:-42 a__from:26 a__hora:30 a__noise:-30 a__of:55 a__on:-61 a_boat:36 a_bot:84 a_bus:51 a_charge:-39
a_computer:35 a_cruise:33 a_day:48 a_gift:42 a_human:-67 a_meeting:57 a_que:36 a_robot:43 a_shuttle:38 a_tow:27
about_the:31 ac:46 aceite:54 aceptan:189 aceptan_tarjeta:66 actually:43 address:-63 address_$:-68 after:-35 again:54
again_$:97 agendeme:-35 agendeme_$:-34 ahi:93 ahi_$:116 aire:72 aire_$:50 al:-68 algo:-35 alguien:29 alguien_que:29
alignment:-28 all:-84 all_four:-26 all_set:-27 already:-60 also:88 also__you:27 also_do:27 am:39 am_$:-35
am__talking:35 amor:52 an:-41 and:-45 and__are:-94 and__i:30 and__is:-26 and__my:27 and__there:49 and__you:145
and_can:80 and_do:112 and_i:-27 and_is:75 and_the:-33 and_you:-89 anda:-59 ando:-52 anoche:35 anoche_$:45 antes:-65
antes_$:-31 antes_de:-30 any:-58 anymore:47 anymore_$:59 anything_$:60 app:48 aqui_$:48 aqui_no:-26 are:35 are_$:-82
are__a:88 are__again:58 are__guys:-52 are__on:-45 are__still:32 are__there:-27 are_we:48 area:28 arm:-36 arranca:25
arreglan:85 as:-43 as_i:26 asap:-33 asap_$:-25 aseguranza:47 asi:-113 asi_$:-75 at:-46 at_$:-56 at_all:86 at_and:-27
atras:-26 auto:88 automated:40 automatica:26 away:25 away_from:57 ayuda:-39 ayuda_$:-34 back_$:44 ballpark:-69
ballpark_$:-65 bano:27 battery:-25 be:42 be_a:31 be_the:26 be_there:-85 before:-26 before_$:43 bendiciones:-28
best:-29 best_$:-28 bici:35 bien:-75 bien_$:-59 bike:61 birthday:26 blocked:72 boat:46 bonjour:79 bonjour__ne:79
bonjour_je:79 bot:96 bot_$:70 brakes:-43 brand:53 bring:129 bring__own:51 bring_it:-56 bring_my:99 btw:27 bus:30
bus_stop:31 but:-32 but__you:40 but_do:39 buy:49 buy_used:30 by:-80 by__mall:-27 by_the:-68 cafe:30 call:-66
call_my:-66 calor:26 cambie:-27 can:140 can__bring:80 can__check:89 can__come:-47 can__do:-135 can__drop:56
can__get:32 can__me:-31 can__pick:31 can__send:66 can__speak:-34 can__talk:-43 can_do:-69 can_i:54 can_my:222
can_see:-25 can_we:-51 can_you:107 cant_do:-32 car_$:-42 car__the:41 car_is:-57 card:52 cards:59 cards_$:59
carro:-110 carros:146 cars:58 cars_$:72 casa:87 casa_$:39 cash:56 cat:41 celular:27 cerca:39 change__appointment:43
change_my:25 charge:-89 charge_$:-40 charge_for:-43 cheaper:-26 check_$:-37 check_my:58 cierto:27 cita:-82 cita_$:-49
claim:27 claim_$:27 clic:71 click:79 close:-26 cobran:-61 cobran_por:-28 code:85 coffee:31 comadre:72 compran:52
comprends:62 comprends_pas:62 con:-48 con_mi:-42 con_ustedes:-55 congratulations:73 congratulations_you:56 cosa_$:27
cost:-58 cost_$:-47 could:58 could__be:59 couldnt:-34 covered:-30 cruise:32 cuanto__y:64 dan:191 day:-80 day_$:-89
days:-36 de_aqui:-32 de_espera:69 de_la:60 de_llantas:67 de_que:-52 de_una:-44 dejar:53 dejeme:-31 del:26
del_carro:-25 deposit:52 deposito:27 descuento:-89 dia:-101 dia_$:-64 did:184 did__get:31 did__leave:60 did_i:71
did_it:-38 did_my:66 did_you:102 didnt:-26 digo:-47 digo_$:-27 dijo:33 dinner:78 direccion:-25 direccion_$:-29
directions:-46 dis:-32 dis_$:-32 do:91 do_$:-147 do__and:26 do__charge:-56 do__close:-57 do__do:108 do__get:-34
do__guys:134 do__have:77 do__keep:-34 do__know:-73 do__need:41 do__open:-75 do__own:-45 do__sell:79 do__shut:-33
do__take:136 do__th:-30 do__use:28 do__work:45 do_friday:-38 do_i:-33 do_it:-88 do_my:-45 do_the:-54 do_they:-28
do_you:491 does:76 does__matter:32 does_it:73 dog:100 dogs:47 domingo:-27 don:26 donde:84 donde__la:26 done_$:58
dont:-42 door:60 door_$:73 dos:-27 down:-32 down_$:-36 drive:-49 driving:101 driving_with:104 drop:88 drop__car:45
drop__off:44 drop_it:77 e:35 earlier:-39 early:-67 early_$:-39 echeme:-26 eh:47 eh_$:48 el__a:-26 el__anoche:50
el__se:-40 el_aire:102 el_carro:-85 el_dia:-45 el_lunes:-36 el_martes:-37 el_recibo:69 email:70 empty:45 en:-47
en__mismo:-25 en__momento:36 en__sala:53 en_el:-34 en_este:47 en_la:-27 encontraron:-25 engine:-37 entendi:47 era:64
era_el:25 era_para:40 eres:62 eres__o:34 es:-100 es_$:65 es__un:27 es_de:-46 es_el:31 es_eso:-27 es_gratis:-50
es_grave:-25 es_una:56 es_urgente:-31 es_usted:29 es_y:50 esa:-30 escribo:76 espacio:-36 espanol:34 espera:68
espera_$:55 esperar:-70 esperar_$:-48 espero:-32 esposa:-25 esta:-53 esta_bien:-30 estan_$:-37 este:47
este_momento:37 estimate:-30 esto_$:-38 estoy_bien:-29 estoy_de:-28 estoy_en:-37 estoy_manejando:115 even:-26 ex:-36
factura:86 favor:-46 favor_$:-32 feels:-35 fell:49 fin:-26 find_a:26 fine:-29 finish:-47 fire:25 first:-41
first_$:-26 fix:66 flies:26 floor:26 for:-25 for_$:-34 for_that:-26 for_the:31 foto:102 four:-40 four_$:-33 free:-57
free_$:-66 frenos:-68 frenos_$:-60 friday_$:-68 from:37 from_my:81 from_your:-25 front:-25 fue_el:50 fuga:-29
game:107 game_$:38 gano:51 garantia:66 get:-36 get__a:-52 get_for:-28 get_me:-37 get_my:-54 get_the:30 gift:72
gift_card:47 give:-31 give_me:-29 go:26 going:-41 going_on:-49 good:-35 got_$:-27 got_any:35 gracias_$:-37
gracias_por:27 gratis:-55 gratis_$:-48 grua:79 grua_$:31 guy_with:25 guys_$:-65 guys_do:98 guys_have:-27
guys_open:-31 guys_take:52 hablan:97 hablar:-34 hablar_con:-47 hablo:-25 hace:-48 hacen:162 had:-28 hago:-30 has:-27
hasta:-30 have__be:25 have__been:32 have__do:-26 have__number:-54 have__shuttle:29 have__wrong:-37 have_a:81
have_anything:-38 have_loaners:35 have_my:-33 have_the:-39 have_to:-38 have_you:54 hay:100 hay__en:40 he:-37
hello:-79 help_$:-40 here:93 here_$:51 hey:186 hey__is:46 hi:49 hi__is:32 hijo:28 hiring:103 hiring_$:79 hit:-35
hitch:43 hm:142 hmm:67 hola:31 home:32 hora__y:35 horario:-28 how:-76 how__i:-40 how__you:-64 how_bad:28 how_do:-99
how_long:54 huh:58 huh_$:61 human:-39 husband:-33 i__a:52 i__all:-25 i__at:-25 i__bring:-28 i__in:-25 i__it:-35
i__my:92 i__need:-32 i__out:26 i__say:27 i__there:-35 i__to:146 i__with:25 i__you:-26 i_am:63 i_be:-26 i_bring:79
i_can:-81 i_cant:78 i_come:-75 i_do:-59 i_drop:25 i_got:26 i_know:-80 i_leave:79 i_mean:43 i_need:147 i_pay:49
i_speak:-36 i_talk:-44 i_talking:35 i_text:25 ice:36 ice_$:28 id:-54 idea:39 idea_$:62 if_my:49 ill:-99
ill__there:-27 ill_be:-35 im:-34 im__a:44 im__out:50 im__with:102 im_driving:109 im_good:-26 im_in:31 im_not:-33
im_ready:-55 imagen:115 in_$:-40 in__waiting:30 in_a:79 in_my:-38 in_your:31 info:-67 info_$:-67 ingles:101
instead:30 into:63 into_the:60 invoice:78 invoice_$:84 ir:49 ir_mi:34 is:90 is_$:44 is__a:69 is__car:121 is__free:-31
is__going:28 is__inspection:37 is__ok:47 is__really:-32 is__the:129 is__urgent:-32 is__wifi:154 is_a:-122 is_gone:-27
is_it:-47 is_making:-39 is_my:222 is_no:-27 is_on:75 is_the:79 is_there:166 is_this:-53 is_your:35 ish:-26 it:-98
it__and:61 it__for:31 it__if:56 it__me:28 it__to:43 it__under:-33 it_a:-34 it_again:96 it_do:26 it_is:-44
it_matter:33 it_off:44 it_ok:52 it_urgent:-32 jaja:45 jaja_$:32 jajaja:60 jajaja_$:39 je:173 je__comprends:62
je_ne:98 jefe:-28 juego:59 just:-81 keep:-41 keep__me:-25 keep_texting:-26 key:66 key_$:31 knock:38 know:-103
know_you:-82 la__de:47 la__del:36 la__el:-41 la__es:30 la__o:39 la__ustedes:38 la__vez:34 la_bici:25 la_casa:61
la_cita:-51 la_factura:88 la_garantia:37 la_llanta:-40 la_llave:28 la_luz:-38 la_manana:-28 la_pieza:33
la_revision:-31 la_sala:69 la_troca:-25 labor:-33 lady:30 laptop:36 laptop_$:36 las_$:-64 las_llantas:-29
las_llaves:31 last_night:45 late:-30 late_$:-27 later:32 later_$:31 le__a:-53 le__el:25 le__la:26 le_gusto:31
league:33 leave:71 leave_my:42 leave_the:31 leaving:-26 left:-28 lentes:66 let:-32 let_me:-29 lets:-32 light:-58
light_is:-27 like:-76 like_a:-30 link:42 list:-50 list_$:-37 live:-26 llanta:-43 llantas:86 llantas_$:-28
llantas_usadas:58 llave:28 llaves:31 llego:38 llegue:29 llegue_a:27 llevar:109 llevar__mi:34 llevar_a:30
llevarlo_$:-33 llevo:-31 lo:-146 lo__a:-60 lo__la:44 lo__mi:-28 lo_puede:34 lo_puedo:-34 loaners:34 lobby_$:26
location:-93 location_$:-47 lol:141 lol_$:118 lol_no:36 long:31 long__you:39 look__a:27 los_ninos:-38 lost:-25
love:32 luego:30 luego_$:79 lugar:-38 luz:-45 machine:45 machine_$:50 mailbox:28 main:-39 making:-48 making_a:-29
mal:-29 mal_$:-34 mama:48 mama_$:41 manana_$:-52 mandan:113 mandar:31 mandarme:-26 mande:70 mande_$:70 manden:-41
mando:35 manejando:46 manejando_$:-44 maquina:59 marca:57 marcar:-31 martes:-34 martes_$:-36 mas:-74 mas_$:-43
mas_tarde:33 matter:28 may:69 may_i:31 mayo:-26 me:-138 me_$:-62 me__el:103 me__mandar:43 me__marcar:-31 me__you:48
me_a:-59 me_again:-39 me_fue:43 me_i:32 me_mandan:100 me_off:-32 mean_$:44 meeting:52 mensaje:100 mensajes:-99
mensajes_$:-52 mes:-35 message:136 message_$:51 message__i:35 message_me:-46 message_when:35 messages:-58
messages_$:-33 mi:49 mi__con:35 mi__se:-25 mi_cita:-34 mi_esposa:-25 mi_hijo:33 mi_numero:-25 mientras:31
mientras_$:31 might:-28 mijo:40 mil:-59 millas:-32 min:-25 mio:35 mis:39 mom:109 mom__you:45 momento:32 monday_$:-43
more:-63 morning_$:-27 motor:-25 motorcycles:39 motorcycles_$:39 much:-27 mucho:-61 must:-40 muy:-87 my:64
my__done:69 my__drop:96 my__fell:60 my__go:63 my__in:29 my__key:29 my__oil:27 my__one:36 my__out:-30 my__says:-48
my__there:59 my__too:98 my__what:25 my__will:-36 my_arm:-32 my_car:29 my_dog:67 my_husband:-30 my_invoice:49
my_kid:25 my_number:-77 my_old:25 my_own:29 my_phone:55 my_son:36 my_spare:35 my_sunglasses:58 my_wife:-32 nada:-38
name:-35 nao:104 ne:98 ne__pas:98 ne_comprends:62 necessary:-25 necessary_$:-25 need__bring:100 need__change:51
need_a:-32 need_that:-57 need_to:160 neither:-31 ni:-101 night:101 night_$:62 ninos:27 ninos_$:44 no_$:-66 no__at:86
no__here:-48 no__me:27 no_arranca:25 no_estoy:44 no_gracias:42 no_idea:79 no_lo:44 no_more:-26 no_noise:87 no_pero:42
no_se:38 no_thanks:43 nobody:-46 noise_$:-43 noise__all:88 noise_at:88 nomas:-54 non:37 north:-35 not:-55 not__me:-50
not_be:61 now:-62 now_$:-53 number:-64 number_$:-64 o:117 o__es:34 o_no:47 o_que:30 obrigado:76 ocupo:29 of__do:69
of_my:50 of_office:56 of_oil:53 of_the:25 of_you:-33 of_your:-27 off_the:48 off_your:-30 office:95 oi:38 oil:71
oil_$:44 ok:34 ok__my:46 ok__the:30 ok_if:58 old:35 olvide:39 on:-47 on_$:-46 on__street:-27 on__th:73 on__the:49
on__tires:46 on_for:46 on_it:41 on_my:-42 on_the:-41 one_or:32 open:-161 open_$:-27 or:27 otra:27 otra_vez:26
otro:-32 out_$:-40 out__office:56 out__the:56 out_of:52 over:-30 overnight:-25 own_oil:27 oye:84 pa:42 pagar:45
pagos:40 papel:29 papel_$:29 paperwork:51 paperwork_$:51 para_cuando:-41 para_que:-28 parking:40 part:29 partes:68
partes_$:60 partido:101 parts:34 pas:126 pas_$:51 pasada:25 pay:44 pedal:-25 pedi:25 perdon:32 pero_no:25 person:-25
person_$:-47 peso:28 phone:50 phone_$:62 pickup:-42 pickup_$:-26 picture:37 pieza:44 pin:-33 pin_$:-43 place:33
please_$:-59 pm_$:-41 pm_and:28 podria:26 ponen:77 por:-98 por_favor:-35 possible:-25 practice:26 precio:-67
precio_$:-48 prefiero:-31 premio:100 prestan:53 price:-134 price_$:-42 puede:37 puede_$:-57 puede__mi:94
puede_esperar:-55 puede_ir:43 pueden_mandar:38 puedo__a:34 puedo_llevar:71 puedo_seguir:-75 puerco:39 put:30
put_on:37 q:49 que_$:243 que__de:61 que__eso:-31 que_es:-53 que_hacer:26 que_hora:29 que_le:-42 que_tiene:-36
quick:-42 quick_$:-43 quien:30 quien__el:43 quien_eres:-27 quien_es:-42 quien_me:35 quienes:-37 quienes_son:-37
quieren:-29 quit:-25 quote:-38 radio:32 rapido:-31 rapido_$:-25 ready:40 ready_$:59 real_person:26 really:-140
recibo:93 recoger:-28 red:34 rent:41 replaced:-46 reply:86 report:42 respondo:80 respuesta:25 respuesta_automatica:26
revisan:111 revision:-31 revoke:-34 revoke_$:-26 right:67 right_now:83 ring:-60 ring_me:-43 robot:141 robot_$:109
rock:-25 room_$:50 sabado_$:-30 saben:58 sala:132 sala_$:29 sala_de:74 sale:34 same:-46 same_day:-63 sat:-33 say:-25
says:-67 schedule:-33 se:-83 se__fue:42 se__y:25 se_lo:-41 se_me:44 see:47 see__message:39 see_the:37 see_your:39
seguir:-63 seguro:28 seguro_$:28 selected:28 selected__a:28 selected_for:28 sell:88 sell_used:40 semana:-33 send:72
sent:43 set:-50 set_$:-25 she:-27 shop:-61 shop_$:-28 shop_is:-26 should:26 should_i:33 shut:-35 shuttle:43
shuttle_$:36 si:-46 si_$:-25 si_llego:32 si_lo:-42 si_pero:-53 si_puedo:29 side:-64 side_$:-51 sigo:-36
siguen__el:-28 siguen_en:-29 silenced:37 silla:35 silla_de:35 sip:-27 sip_$:-27 sirve:38 slot:-29 slot_$:-26 snow:85
so:-89 sold:-27 someone__me:26 son:-83 son_$:-60 son__it:54 sorry:35 sorry_$:-30 sorry_i:87 soy:-43 spam:-25 spare:35
spare_key:25 speak:-56 speak_to:-33 spring:-36 spring_$:-28 squeaking:56 st_$:-38 station:29 steering:-42 still:28
still__the:-25 stop:-36 stop_$:-27 street:-30 street_$:-38 su:230 suena:-26 sunday:-32 sunglasses:58 supposed:35
supposed_to:35 t:-38 take:37 take__off:-46 take_checks:29 take_me:-35 take_my:-26 talk__a:-53 talk_to:-68 talking:30
talking_to:35 taller:-28 tambien:140 tambien_$:86 tan:-36 tank:27 tap:25 tarjeta:97 tarjeta_de:35 tax:-30 te:135
te__luego:80 te_escribo:83 tech:-43 tell_me:-31 temprano:-27 tendran:35 text:33 texting:-47 texting_me:-30 textos:-37
texts:-28 th_$:32 than:-27 thank:-56 thank_you:-55 thanks:33 thanks__you:35 that:-44 that_$:-98 that__on:25
that_is:-50 that_you:29 the_$:35 the__at:-25 the__before:45 the__do:34 the__in:-28 the__last:39 the__off:33
the__on:48 the__person:-26 the__room:34 the__side:-51 the__that:41 the__with:49 the__you:-26 the_address:-31
the_best:-28 the_blue:-25 the_door:74 the_game:104 the_invoice:29 the_messages:-28 the_new:30 the_night:37
the_north:-31 the_office:54 the_part:31 the_same:30 the_truck:-40 the_trunk:45 the_waiting:49 the_wrong:-46 them:-27
them_$:-26 then:-39 then_$:-29 there:38 there_$:50 there__a:-56 there__charge:-40 there__to:53 there_a:52
there_is:-107 these:-52 think:-38 this:-66 this_a:84 through:37 through_$:61 thurs:-48 thursday_$:-29 tiene:-118
tienen:132 tienen_$:-48 tienen__de:93 tienen__el:-70 tienen__para:48 tienen_lugar:-52 tienen_wifi:65 time_$:-58
time__it:96 time__you:-85 time_do:-83 time_is:61 tio:25 tire:-52 tires:28 tires_$:-38 to:-44 to_$:-34 to__anything:83
to__it:-37 to__real:-42 to__the:42 to_a:-36 to_be:60 to_bring:96 to_change:46 to_claim:29 to_drive:-43 to_the:-39
todavia:40 today:-62 today_$:-44 todo:-59 todo_el:-32 toma:-31 tomorrow_$:-43 too:47 too_$:134 too_early:-25
tortillas:75 tow:107 tow_$:49 tow_hitch:29 trabajan:80 trae:-34 trailer:53 trip:91 truck:-58 truck_in:-29 trunk:45
trunk_$:46 tu:56 turned:57 twice:-32 twist:-25 twist_my:-25 two:-33 typing:46 uh:-31 un:27 un_robot:55 una:77
una__o:43 una_maquina:58 under:-48 under_my:-31 up:-115 up_$:-38 urgent_$:-31 urgente:-35 usadas:58 use:51 used:77
used_cars:41 ustedes:60 ustedes_$:-113 vacaciones:-29 venden:185 venden_llantas:67 vendi:-46 vendimos:-29 verdad_$:28
vez:52 vez_$:41 vidrios:51 viene:-27 viernes_$:-73 voice:26 voy_a:-58 voy_manejando:45 wait:-42 wait_$:-30 waiting:46
waiting_room:48 walk:34 want:40 warranty:37 warranty_$:-32 was:71 was__again:96 was_it:94 was_that:61 we_do:-37
weather:26 well:28 well_$:31 went:-35 were:-46 what_$:91 what__a:-29 what__do:-67 what__is:29 what__the:-26
what__this:-33 what__was:131 what__you:-179 what_a:30 what_did:-68 what_do:-102 what_time:123 wheel:-37 when__you:-40
when_do:-59 where__you:-35 where_are:-37 where_is:34 which_shop:-27 while:40 who__the:125 who__this:-45 who__you:-63
who_are:-61 who_dis:-32 who_is:-40 why:-123 why_$:-43 why__you:-72 why_do:-91 wife:-55 wife_$:-35 wife__it:32
wifi:270 wifi_$:142 will__it:-61 will__there:-27 will_bring:-44 will_do:-50 will_you:39 window:79 wipers:66
with_me:32 won:126 work:-54 work_$:-38 work_on:62 worked:27 working:33 would:-26 wrong:-52 wrong_person:-35 y:31
y_$:-29 y__ahi:-28 y__es:-30 y__que:26 y_el:-40 y_eso:26 y_tambien:25 y_tienen:41 ya:-69 ya_$:-31 ya__mi:78
ya_esta:50 ya_no:-36 ya_pedi:25 yep:42 yep__you:29 yes_$:-52 yes__do:28 yes__i:26 yes__you:68 yes_and:30 yes_do:69
yes_i:-38 yet:27 yet_$:31 yo:-41 you:110 you_$:-131 you__a:200 you__anything:-39 you__before:-29 you__bot:53
you__checks:31 you__do:100 you__fix:37 you__for:-59 you__have:-34 you__in:37 you__is:31 you__it:-31 you__loaners:30
you__look:28 you__me:-80 you__my:-55 you__on:84 you__open:-44 you__take:47 you__text:-29 you__the:101 you__today:-32
you__used:60 you__what:-27 you_a:101 you_are:-77 you_call:-72 you_can:-74 you_charge:-57 you_check:89 you_close:-59
you_do:61 you_fix:31 you_from:-25 you_got:39 you_have:49 you_hiring:88 you_keep:-34 you_need:-63 you_on:-51
you_open:-104 you_people:-30 you_pick:28 you_put:70 you_see:56 you_sell:89 you_send:87 you_shut:-33 you_take:105
you_tell:-30 you_text:39 you_then:-26 you_there:41 you_to:-28 you_use:36 you_work:43 your:66 your__is:64
your__when:35 your_message:44 your_the:-25 youre:-47
"""
