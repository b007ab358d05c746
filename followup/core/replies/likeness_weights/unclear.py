"""What speaks for and against `unclear`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "unclear"
BIAS = -67
WEIGHTS = """\
#abaj:21 #aben:52 #abla:30 #ablo:-18 #abor:-19 #acac:-19 #acce:26 #aced:-28 #acei:22 #acen:110 #acep:110 #ache:21
#achi:43 #actu:86 #adas:27 #addr:-37 #aded:20 #adel:-20 #adio:18 #ador:89 #adre:21 #afte:-19 #agai:35 #agen:37
#ages:-33 #agos:28 #agua:-44 #ague:34 #ahor:-19 #aigo:-20 #aila:23 #aile:50 #aire:47 #aiti:29 #ajaj:53 #ajan:38
#ajes:-55 #akes:-48 #alam:26 #alan:36 #aler:-18 #algo:-37 #algu:25 #alia:23 #alin:18 #alki:22 #alle:-47 #allo:20
#allp:-42 #ally:-47 #alre:-34 #also:61 #alud:-19 #amag:-18 #amat:29 #ambi:37 #amen:-21 #amor:27 #amos:-34 #anas:43
#ance:-18 #anci:20 #anda:30 #ando:-59 #anej:47 #anks:18 #anne:-18 #anoc:22 #anol:26 #anos:47 #ansm:22 #ante:-34
#anti:45 #anty:27 #anym:28 #anyo:27 #anza:18 #aper:20 #appo:-19 #aqui:57 #aran:48 #ards:50 #area:19 #aren:-21
#arge:-43 #arje:66 #arle:44 #arli:-27 #arly:-34 #arme:-56 #aron:-51 #arou:-22 #arra:29 #arre:19 #arro:23 #arse:25
#arti:75 #arts:24 #asap:-21 #aseg:47 #asse:25 #asta:-28 #aste:46 #atan:55 #atch:-36 #ater:35 #athr:18 #atic:65
#atio:20 #atis:-39 #ativ:-29 #ator:-33 #atra:-26 #atul:50 #auto:134 #aves:19 #avia:22 #avin:-19 #baja:26 #ball:-46
#band:-23 #bano:57 #bath:18 #been:-18 #befo:-20 #bend:-18 #best:-19 #bici:38 #bien:68 #bike:48 #blan:67 #blar:-26
#bles:-29 #bloc:38 #body:-28 #bonj:73 #brak:-32 #brig:59 #brin:102 #bscr:-21 #cade:25 #cafe:26 #call:-42 #camb:-63
#came:-33 #cant:20 #canz:-20 #card:79 #care:-18 #carr:28 #cars:41 #cart:19 #casa:40 #cash:29 #cati:-40 #ceit:22
#cell:-18 #cept:111 #cerc:33 #chai:26 #char:-52 #ched:-21 #cher:26 #ches:19 #chin:25 #cial:-28 #cibe:18 #cibo:46
#cita:-49 #cked:59 #cker:-19 #ckin:-20 #ckup:-22 #clai:21 #clea:28 #cles:28 #clic:75 #clim:25 #clos:-32 #cobr:-48
#code:53 #coff:20 #coma:31 #comp:69 #cong:58 #cont:29 #corn:32 #cost:-60 #coul:18 #cred:92 #crui:23 #cted:18 #ctic:20
#ctio:-21 #ctri:46 #ctua:28 #ctur:78 #cuan:21 #cuar:-18 #cuen:-49 #cupo:30 #curr:43 #cycl:42 #dama:-18 #dame:-19
#davi:22 #days:-44 #ddre:-37 #deal:-21 #deja:29 #deje:-42 #dele:-25 #deli:40 #deme:-33 #depo:38 #desc:-57 #deta:27
#didn:-18 #dies:34 #digo:48 #dijo:26 #dimo:-18 #dire:-48 #disp:30 #dist:57 #dito:76 #does:34 #domi:-28 #dond:45
#dont:-25 #door:40 #dora:34 #dore:39 #down:-43 #dres:-48 #driv:22 #drop:75 #dshi:20 #dule:-27 #dura:23 #eaci:27
#eage:-20 #eaki:21 #eall:-85 #earl:-63 #ease:-34 #eats:31 #eave:48 #eces:-53 #eche:19 #echi:-18 #ecia:-60 #ecib:65
#ecio:-58 #ecoj:21 #ecte:19 #ectr:46 #edal:-19 #edes:42 #edit:86 #edul:-27 #eels:-22 #eeri:-27 #eeti:36 #efie:-21
#efor:-20 #egla:47 #egue:24 #egui:-38 #egur:45 #eite:22 #eith:-34 #ejan:63 #ejar:33 #ejem:-21 #elan:-26 #elec:66
#eliv:42 #ello:-59 #else:-20 #emai:58 #eman:-25 #emas:-18 #empr:-44 #empt:27 #ende:79 #endi:-38 #endo:33 #ends:33
#enen:107 #engi:-25 #engl:21 #enme:-59 #enos:-37 #ente:23 #enti:-29 #entl:40 #ento:-31 #ents:22 #epai:28 #epla:-23
#eply:57 #epos:36 #epta:119 #eran:-21 #erar:-48 #erca:33 #ered:28 #erem:18 #eren:-37 #eres:24 #eria:24 #erin:-24
#erio:-19 #erlo:-20 #erne:-18 #erst:26 #erti:39 #erwo:35 #escr:35 #escu:-48 #esda:-18 #esel:31 #espa:29 #espe:-30
#espo:37 #essa:41 #esta:35 #este:20 #esto:-25 #etai:28 #eter:-34 #ethe:20 #etin:33 #evar:70 #even:-20 #ever:-75
#evis:29 #evok:-22 #exam:46 #expl:-18 #exti:-26 #exto:-20 #exts:-23 #fact:67 #feel:-19 #fell:36 #ffee:20 #ffic:47
#ffle:26 #fica:20 #fice:56 #fier:-25 #fina:21 #fini:-37 #firs:-24 #floo:18 #fore:-33 #forg:-19 #foto:39 #four:-26
#free:-37 #fren:-66 #from:20 #fter:-19 #gado:66 #gain:35 #gale:-20 #game:58 #gana:50 #gano:30 #gara:37 #gato:21
#gend:-47 #gent:-20 #gift:51 #gine:-25 #glan:51 #glas:39 #gles:78 #glis:21 #goin:-25 #good:-18 #grab:21 #grad:-20
#grea:-25 #grua:46 #gual:-22 #guar:53 #guie:30 #guir:-38 #gura:47 #habl:18 #hace:74 #haha:57 #hair:19 #half:18
#hanc:-21 #hank:-21 #harg:-49 #head:-27 #hedu:-27 #hell:-49 #help:-18 #here:84 #hese:-30 #hiel:32 #hijo:27 #hile:22
#hina:-18 #hine:36 #hitc:42 #hole:-19 #home:28 #hora:-39 #hous:-22 #hroo:18 #hrou:27 #hurs:-41 #husb:-22 #hutt:33
#iado:20 #iben:18 #ible:-23 #icat:23 #icku:-22 #icos:48 #ictu:20 #idad:19 #idea:25 #ider:24 #idnt:-18 #ieja:20
#ield:27 #iemp:-24 #iend:23 #iere:-21 #iero:-27 #iese:34 #ieza:33 #ific:26 #ight:-29 #igua:-26 #ilea:-18 #ilen:20
#iler:34 #illa:32 #imag:123 #imat:-20 #imos:-20 #impi:40 #indo:57 #inds:19 #inea:29 #ines:24 #info:-39 #ingl:68
#ingo:-34 #inis:-34 #inne:53 #insp:33 #inst:34 #intm:-18 #into:32 #invo:47 #ione:39 #ions:66 #ious:-28 #iper:46
#ippe:-22 #irec:-47 #irin:77 #irst:-24 #irve:33 #isan:70 #isar:-18 #isit:-23 #iste:36 #itch:29 #ithe:-34 #itin:26
#itte:20 #iver:35 #ivin:51 #jaja:138 #jeje:53 #jeme:-19 #jeta:66 #jueg:61 #just:-47 #keep:-27 #knoc:21 #know:-64
#labo:-19 #laim:21 #lain:-24 #lass:27 #last:-19 #lati:45 #lava:26 #lave:46 #lcan:-20 #ldnt:-21 #lean:30 #leas:-22
#leav:39 #lect:66 #lego:21 #legu:22 #lenc:21 #lent:29 #lers:29 #less:-31 #leva:55 #lick:26 #lien:-26 #lier:-24
#ligh:-46 #like:-38 #limp:35 #line:19 #link:32 #list:-52 #live:22 #lkin:22 #llam:-40 #llan:29 #llas:23 #llav:47
#lleg:38 #ller:-21 #llev:52 #llpa:-42 #loan:22 #loca:-60 #lock:44 #loor:23 #lose:-31 #love:18 #lowe:26 #lpar:-42
#lrea:-34 #lueg:24 #luga:-38 #lvid:20 #mach:37 #madr:27 #mage:105 #mail:54 #maki:-19 #male:18 #mana:-52 #mand:82
#mane:28 #maqu:42 #marm:-21 #mart:-23 #mati:61 #mayo:-20 #mbia:-22 #mbie:80 #mbio:-21 #mbre:23 #meet:41 #memb:20
#mess:49 #mete:-19 #mewh:19 #mien:18 #migh:-20 #mijo:26 #mile:-30 #mill:-30 #mind:-24 #ming:-47 #misi:27 #miss:-21
#moni:24 #morn:-19 #moto:75 #move:-34 #mpan:-19 #mpia:41 #mple:43 #mpty:28 #mput:30 #much:-53 #must:-24 #nada:-22
#name:-35 #nanc:22 #nced:20 #ncel:-26 #ncon:-18 #ndan:80 #nday:-28 #ndem:-22 #nden:96 #nder:-33 #ndin:-18 #ndow:64
#ndsh:20 #neac:27 #nece:-44 #neit:-21 #neja:58 #neve:-20 #ngin:-24 #ngla:79 #ngle:68 #ngli:21 #ngra:56 #nigh:29
#ning:-42 #nino:21 #nion:32 #nish:-46 #njou:73 #nner:36 #nobo:-24 #nock:21 #noma:-28 #nort:-21 #noti:21 #nsmi:22
#nsor:20 #nspe:33 #nsta:18 #nste:20 #ntas:59 #nter:-23 #ntes:30 #ntia:38 #ntly:40 #ntme:-18 #ntra:46 #nuev:-35
#numb:-40 #nvoi:48 #nymo:28 #oane:22 #obod:-24 #obot:83 #obra:-41 #obri:46 #ocat:-67 #ocke:48 #ocup:24 #odav:22
#oday:-42 #odri:18 #offe:32 #offi:56 #oger:-19 #oice:66 #oing:-26 #oint:-26 #okin:-20 #olar:20 #omad:33 #omas:-30
#omat:100 #ombr:22 #omer:32 #omet:-19 #omew:19 #omin:-39 #ompl:-23 #ompr:70 #ompu:28 #onde:60 #ondo:49 #onen:51
#ongr:56 #onit:21 #onjo:72 #only:-19 #ontr:55 #ooki:-19 #oone:-21 #open:-108 #orar:-20 #orcy:27 #ores:51 #orio:-21
#orki:22 #orma:-23 #orne:19 #orni:-19 #orra:26 #orre:-23 #orse:-19 #orth:-24 #orti:40 #oses:19 #osit:35 #ossi:-20
#otal:-20 #otif:18 #otor:33 #otro:-19 #ouch:25 #ound:-43 #oung:22 #oure:-27 #ours:-18 #oved:18 #over:-65 #owed:29
#pack:42 #paga:25 #pago:26 #pair:20 #pano:26 #pape:37 #park:-37 #part:159 #peak:-36 #pecc:18 #peci:-45 #peda:-19
#pera:-24 #perr:35 #pers:71 #perw:35 #peso:29 #pict:20 #piez:33 #pint:19 #plai:-23 #plan:-19 #poin:-24 #pond:53
#pone:48 #pong:-19 #pons:25 #pose:25 #posi:28 #pped:-27 #ppoi:-19 #ppos:26 #prac:20 #prec:-48 #pref:-25 #pres:26
#pric:-89 #prin:-29 #prop:20 #ptan:134 #pued:26 #puer:29 #pull:-19 #quea:22 #qued:-33 #ques:26 #quic:-25 #quie:-22
#quin:42 #quit:-32 #quot:-25 #raba:38 #ract:23 #rado:-18 #raff:19 #rail:58 #rain:-36 #raja:19 #rake:-32 #rame:-37
#rano:-25 #rant:70 #ranz:37 #rapi:-19 #rari:-22 #raro:-31 #rata:40 #rati:-45 #rato:-30 #ratu:45 #rcar:-21 #rcyc:27
#rdan:25 #read:18 #real:-84 #rece:18 #rect:-28 #refi:-21 #rega:20 #regl:40 #remi:51 #reno:-46 #rent:63 #repa:32
#repl:45 #resp:70 #ress:-44 #resu:-18 #revi:36 #revo:-22 #rgen:-30 #rger:28 #ribe:-24 #ribo:52 #rice:-90 #rico:34
#riga:49 #righ:23 #ring:94 #rios:37 #riou:-25 #ripp:-24 #rive:-38 #rivi:65 #rjet:66 #rkin:33 #rlie:-27 #rman:19
#rned:33 #rner:19 #rnin:-25 #robo:83 #rong:-36 #ront:-19 #room:54 #ropi:22 #roun:-35 #rran:50 #rreg:31 #rren:32
#rrit:24 #rros:91 #rtes:32 #rtil:50 #ruck:-34 #ruis:23 #runk:26 #rwor:35 #sabe:57 #saca:-31 #sada:39 #sage:71
#sala:99 #sale:21 #sali:-18 #salu:-19 #same:-19 #says:-36 #sban:-22 #sche:-27 #scue:-46 #sday:-28 #self:-19 #sell:63
#sena:20 #send:52 #seri:-44 #shie:19 #shop:-51 #sibl:-27 #side:-23 #sigo:-22 #sile:20 #sing:-18 #sirv:33 #smis:22
#snow:57 #sold:-28 #sona:19 #soon:-31 #spac:-21 #span:49 #spar:21 #spea:-36 #spon:88 #spos:-23 #spri:-22 #ssag:58
#ssed:-29 #sses:36 #ssib:-18 #stal:20 #stan:44 #star:-46 #stee:-27 #stic:-27 #stil:21 #stim:-32 #stop:-64 #stre:-35
#stri:-20 #subs:-21 #supp:34 #tail:36 #take:21 #tala:20 #talk:31 #tall:-33 #tamb:100 #tand:18 #tant:-22 #tard:-25
#tarj:66 #tati:18 #tead:20 #tede:42 #teer:-27 #temp:-38 #tend:39 #tera:-25 #teri:27 #text:-69 #than:-41 #that:-61
#thes:-31 #thin:-30 #this:-34 #thro:43 #thur:-32 #tica:22 #tice:23 #tico:23 #tido:66 #tiem:-18 #tien:30 #tifi:40
#till:53 #tima:-35 #time:-44 #tint:23 #tire:-26 #tive:-30 #tmen:-18 #toda:-26 #todo:-29 #toma:97 #took:-20 #torc:27
#tore:30 #tort:57 #tota:-20 #trab:28 #trai:43 #trat:40 #tree:-26 #tric:46 #trip:41 #truc:-38 #trun:27 #tter:-23
#ttle:39 #tual:25 #tula:50 #tura:81 #turb:59 #ture:18 #turn:31 #uali:21 #uall:37 #uard:47 #ubre:18 #ubsc:-21
#ucho:-42 #ueak:28 #ueda:-23 #uede:24 #uego:74 #uena:-22 #uent:-53 #uera:18 #uerc:19 #uest:26 #ueva:-22 #ugar:-38
#ught:-19 #uick:-25 #uien:22 #uina:38 #uise:22 #ulat:50 #uldn:-21 #umbe:-40 #umbr:18 #unda:-20 #unde:-36 #unge:21
#unio:50 #uote:-25 #uppo:26 #uran:58 #urge:-20 #urne:34 #urre:42 #usad:51 #usan:44 #usba:-22 #used:39 #uste:35
#utom:94 #uttl:33 #vend:115 #veng:32 #vere:19 #vert:31 #very:-29 #vibr:-24 #vien:-21 #ving:24 #visa:47 #visi:-43
#voic:67 #voke:-22 #vuel:-19 #walk:22 #want:29 #ward:-19 #warr:27 #weat:28 #week:-22 #well:23 #were:-26 #when:-39
#whil:22 #wife:-30 #wifi:177 #wind:84 #wipe:37 #word:38 #work:30 #wors:-19 #wron:-36 #xtin:-25 #xtos:-18 #ycle:37
#ymen:44 #ymor:28 #your:29 %again_later:-88 %again_later%agree:-19 %again_later%car:-36 %again_later%car_part:28
%again_later%family:-21 %again_later%lift:-53 %again_later%message:-24 %again_later%money:-19 %again_later%noise:24
%again_later%on_way:25 %again_later%pay_day:-40 %again_later%phone:39 %again_later%place:-19 %again_later%staff:57
%again_later%start_again:60 %again_later%wrong_one:18 %agree:-75 %agree%bring:23 %agree%call_off:48 %agree%car:42
%agree%car_part:36 %agree%elsewhere:18 %agree%fails:18 %agree%family:49 %agree%how_long:31 %agree%lift:46
%agree%meaning:26 %agree%message:-18 %agree%money:103 %agree%noise:-36 %agree%pay_day:62 %agree%question:-53
%agree%thanks:-28 %away:-33 %away%bring:-19 %away%lift:-18 %away%message:32 %away%odometer:-19 %away%on_way:-26
%away%phone:32 %away%shift_it:-18 %away%staff:65 %away%start_again:18 %bad:-145 %bad%car_part:-29 %bad%do_it:-18
%bad%staff:-34 %bad%who:30 %bring:-43 %bring%busy:-36 %bring%call_off:24 %bring%car_part:34 %bring%do_it:18
%bring%elsewhere:39 %bring%fails:19 %bring%family:86 %bring%leave_me:-51 %bring%money:25 %bring%odometer:38
%bring%opening:34 %bring%question:31 %bring%refuse:65 %bring%season:19 %bring%shift_it:53 %bring%who:26
%bring%wrong_one:28 %busy:-50 %busy%phone:27 %busy%question:19 %busy%shift_it:27 %call_off:-26 %call_off%do_it:-39
%call_off%elsewhere:32 %call_off%fails:35 %call_off%family:-19 %call_off%machine:22 %call_off%money:57
%call_off%odometer:76 %call_off%on_way:-25 %call_off%phone:23 %call_off%place:28 %call_off%question:18
%call_off%refuse:-28 %call_off%season:-19 %call_off%shift_it:21 %call_off%start_again:-44 %call_off%thanks:54
%call_off%who:32 %car%car_part:-44 %car%do_it:23 %car%family:-37 %car%noise:-37 %car%on_way:-21 %car%phone:23
%car%place:29 %car%question:38 %car%refuse:-60 %car%shift_it:-28 %car%staff:59 %car_part:-31 %car_part%fails:-79
%car_part%leak:-31 %car_part%lift:24 %car_part%machine:-23 %car_part%money:-43 %car_part%noise:-26
%car_part%on_way:-44 %car_part%pay_day:48 %car_part%phone:59 %car_part%place:-32 %car_part%season:36
%car_part%shake:-28 %car_part%shift_it:46 %car_part%staff:29 %car_part%start_again:23 %do_it:-58 %do_it%family:-63
%do_it%leak:-18 %do_it%leave_me:28 %do_it%lift:-18 %do_it%money:29 %do_it%odometer:-26 %do_it%on_way:33
%do_it%question:-31 %do_it%refuse:29 %do_it%season:30 %do_it%staff:62 %do_it%who:25 %doubt:-36 %doubt%family:20
%elsewhere:-63 %elsewhere%family:-19 %elsewhere%message:-18 %elsewhere%money:29 %elsewhere%on_way:27
%elsewhere%phone:-19 %elsewhere%place:-32 %elsewhere%who:47 %elsewhere%wrong_one:20 %fails:-33 %fails%message:20
%fails%odometer:-24 %fails%place:37 %fails%question:36 %fails%staff:30 %family:55 %family%message:31
%family%on_way:-25 %family%phone:-26 %family%question:47 %family%shift_it:71 %family%who:-34 %gone_car:-38
%gone_car%question:33 %gone_car%refuse:37 %gone_car%wrong_one:25 %how_long:-134 %how_long%money:24 %how_long%place:23
%how_long%question:57 %how_long%shift_it:-25 %how_long%start_again:38 %leak:-69 %leave_me:-65 %leave_me%lift:38
%leave_me%on_way:56 %leave_me%opening:18 %lift:87 %lift%on_way:-25 %lift%place:28 %lift%wrong_one:20 %machine:256
%machine%message:24 %machine%phone:-21 %machine%question:29 %machine%staff:24 %meaning:-91 %meaning%money:24
%meaning%question:-19 %message%money:59 %message%phone:22 %message%place:19 %message%shift_it:31
%message%start_again:-67 %message%who:-20 %money:-129 %money%on_way:-32 %money%who:65 %noise%odometer:-19
%noise%question:-32 %noise%refuse:24 %noise%start_again:27 %odometer%on_way:36 %odometer%shift_it:-20
%odometer%staff:-37 %odometer%who:24 %on_way:-49 %on_way%opening:53 %on_way%place:56 %on_way%question:37
%on_way%refuse:-18 %on_way%staff:18 %opening:-188 %opening%question:-28 %opening%staff:-37 %pay_day%question:-23
%pay_day%season:-21 %phone:-78 %phone%question:23 %phone%refuse:25 %phone%staff:-72 %phone%wrong_one:-50 %place:-102
%place%wrong_one:25 %question:-117 %question%refuse:-37 %question%shift_it:-22 %question%staff:53
%question%start_again:34 %question%who:-22 %refuse:-64 %refuse%shift_it:82 %refuse%staff:-26 %refuse%thanks:23
%refuse%wrong_one:-28 %season:-36 %shake:-71 %shift_it:-71 %shift_it%staff:23 %smoke_smell:-63 %staff:21
%staff%start_again:18 %staff%who:39 %staff%wrong_one:23 %start_again:-62 %thanks:-126 %who:-45 %wrong_one:-85 @?:205
@car:-40 @confirm:-25 @nothing:31 @odometer:57 @offers:-36 @reading:-142 @time:29 @time_:-21 @times:-70
@walk_in_will_do:-28 ^_$:32 ^_about:19 ^_abren:-21 ^_aceptan:68 ^_actually:27 ^_after:-19 ^_am:22 ^_and:-56
^_ando:-21 ^_any:-31 ^_are:87 ^_asap:-18 ^_ayuda:-23 ^_ballpark:-39 ^_cant:-40 ^_car:-41 ^_cobran:-33 ^_como:22
^_congratulations:50 ^_cost:-28 ^_cuanto:54 ^_de:-71 ^_dejeme:-19 ^_did:97 ^_do:-40 ^_does:24 ^_el:-21 ^_en:20
^_eres:42 ^_es:-107 ^_ese:-18 ^_eso:-22 ^_esta:-57 ^_estan:37 ^_estoy:23 ^_free:-18 ^_friday:35 ^_get:-27 ^_go:-19
^_good:-22 ^_have:-25 ^_hay:-29 ^_hello:-49 ^_help:-24 ^_hey:118 ^_hi:34 ^_hm:81 ^_hmm:49 ^_how:-40 ^_i:-107 ^_id:-19
^_ill:-40 ^_im:21 ^_info:-27 ^_is:74 ^_it:-46 ^_la:-60 ^_lo:-47 ^_lol:80 ^_los:23 ^_mande:49 ^_me:-25 ^_mi:-19
^_mom:23 ^_my:-48 ^_neither:-21 ^_ni:-27 ^_not:-42 ^_olvide:29 ^_on:-21 ^_out:25 ^_oye:48 ^_para:-44 ^_por:-22
^_precio:-27 ^_price:-28 ^_puedo:-59 ^_que:67 ^_revoke:-21 ^_saturday:25 ^_se:-26 ^_sorry:25 ^_steering:-26
^_still:-44 ^_su:94 ^_take:-27 ^_that:-27 ^_the:-42 ^_there:-55 ^_this:-18 ^_tiene:-29 ^_tienen:62 ^_trabajan:40
^_trae:-28 ^_voy:27 ^_want:25 ^_we:-22 ^_wed:20 ^_what:34 ^_when:-18 ^_where:-22 ^_who:-20 ^_why:-70 ^_will:-41
^_wipers:36 ^_y:-38 ^_ya:-27 ^_yep:20 ^_yo:-27 ^_you:-180 a:-35 a__can:31 a__card:28 a__for:-28 a__from:19 a__of:33
a__on:-38 a_bot:63 a_charge:-24 a_cruise:23 a_human:-38 a_la:-19 a_que:22 a_real:19 a_robot:29 a_shuttle:28 a_tow:21
about_the:25 ac:31 aceite:25 aceptan:129 aceptan_tarjeta:46 actually:28 address:-37 address_$:-43 again:35 again_$:59
agendeme:-20 ahi:50 ahi_$:74 aire:48 aire_$:31 al:-51 algo:-23 all:-62 all_set:-18 already:-34 also:61 also__you:18
am:28 am_$:-25 am__talking:24 amor:31 an:-27 and__are:-53 and__my:21 and__there:29 and__you:95 and_can:50 and_do:68
and_i:-19 and_is:39 and_the:-23 and_you:-50 anda:-34 ando:-30 anoche:22 anoche_$:29 antes:-42 antes_$:-20
antes_de:-18 any:-43 anymore:28 anymore_$:34 anything_$:37 app:36 aqui_$:27 are:41 are_$:-55 are__a:69 are__again:35
are__guys:-29 are__on:-29 are__still:21 are_they:19 are_we:32 area:22 arm:-18 around:-20 arreglan:51 as:-22 as_i:21
asap:-21 aseguranza:37 asi:-57 asi_$:-43 at:-34 at_$:-31 at__you:18 at_all:53 auto:50 away_$:-18 away_from:32
ayuda:-24 ayuda_$:-21 back_$:32 ballpark:-42 ballpark_$:-40 be_a:24 be_the:23 be_there:-45 been:-18 before:-20
before_$:18 best:-19 best_$:-18 bici:29 bien:-45 bien_$:-36 bike:30 bot:68 bot_$:48 brakes:-31 brand:37 bring:102
bring_it:-32 bring_my:55 btw:20 buenos:19 buenos_dias:19 but__you:20 buy:26 by:-49 by_the:-39 call:-32 call_my:-39
can:123 can__bring:47 can__check:61 can__come:-31 can__do:-82 can__drop:41 can__me:-18 can__pick:18 can__send:50
can__speak:-21 can__talk:-27 can_do:-33 can_i:33 can_my:142 can_we:-39 can_you:86 cant_do:-21 car_$:-22 car__the:28
car_is:-29 card:33 cards:46 cards_$:44 carro:-60 carro_$:18 carros:87 cars:32 cars_$:49 casa:33 cash:29 cat:30
cerca:34 change__appointment:24 charge:-55 charge_$:-23 charge_for:-31 check_$:-20 check_my:44 cierto:22 cita:-47
cita_$:-31 claim:21 claim_$:21 clic:40 click:49 closed:-18 cobran:-42 cobran_por:-20 code:53 coffee:21 comadre:33
como__mi:19 compran:31 comprends:47 comprends_pas:47 con:-28 con_mi:-29 con_ustedes:-27 congratulations:50 corner:19
cost:-40 cost_$:-31 could:37 could__be:38 could_you:-21 couldnt:-19 covered:-19 cruise:23 cuanto__y:41 da:-19 dan:114
day:-80 day_$:-78 days:-21 de__o:18 de_aqui:-20 de_la:24 de_las:-18 de_llantas:42 de_que:-33 de_una:-28 dejar:37
dejeme:-19 descuento:-49 dia:-87 dia_$:-46 did:129 did_i:53 did_it:-21 did_my:40 did_you:50 didnt:-18 digo:-29
dijo:26 direccion_$:-20 directions:-29 do:113 do_$:-81 do__charge:-37 do__close:-36 do__do:51 do__guys:80 do__have:73
do__keep:-21 do__know:-42 do__need:32 do__open:-51 do__own:-24 do__sell:55 do__shut:-21 do__take:103 do__use:19
do__work:26 do_friday:-27 do_i:-21 do_it:-58 do_my:-24 do_the:-30 do_you:361 does:46 does_it:35 dog:42 domingo:-20
donde:47 done_$:38 dont:-25 door:44 door_$:48 down:-24 down_$:-21 drive:-37 driving:65 driving_with:71 drop:69
drop__car:30 drop__off:31 drop_it:57 earlier:-24 early:-32 early_$:-28 eh:36 eh_$:36 el__se:-24 el__tienen:18
el_aire:66 el_carro:-46 el_de:-18 el_dia:-24 el_martes:-18 el_recibo:27 el_viernes:-18 email:35 empty:28 en:-18
en__momento:21 en__sala:24 en_dos:20 en_este:31 engine:-25 entendi:25 era:31 eres:41 eres__o:28 es:-69 es_$:47
es_de:-25 es_el:28 es_eso:-18 es_gratis:-35 es_grave:-18 es_una:36 es_urgente:-22 es_usted:23 es_y:26 escribo:52
ese:-22 eso_me:18 espacio:-18 espanol:26 espera:48 espera_$:38 esperar:-47 esperar_$:-30 esta:-31 estan:24 este:31
este__no:19 este_momento:23 estimate:-20 esto_$:-22 estoy_de:-19 estoy_en:-22 estoy_manejando:72 even:-18 factura:60
favor:-30 favor_$:-22 feels:-22 fell:33 fin:-19 find_a:20 finish:-28 first:-24 first_$:-19 fix:24 floor:23 for:-29
for_$:-19 for_my:-19 for_the:23 foto:39 four:-25 four_$:-23 free:-38 free_$:-36 frenos:-41 frenos_$:-37 friday_$:-40
from:20 from_my:34 fue:20 fue_el:40 game:71 gano:30 garantia:38 get__a:-36 get_a:24 get_me:-24 gift:51 gift_card:33
go:24 going:-25 going_on:-30 good:-18 gracias_$:-25 gracias_por:21 gratis:-39 gratis_$:-33 grua:46 guys_$:-28
guys_do:67 guys_open:-19 hablan:71 hablar:-20 hablar_con:-33 hablo:-18 hace:-24 hacen:111 had:-24 half:18 has:-19
have__be:19 have__wrong:-21 have_a:46 have_anything:-23 have_loaners:18 have_my:-20 have_the:-28 have_to:-20 hay:52
hay__en:25 hello:-49 help_$:-22 here:62 here_$:39 hey:118 hi:34 hijo:28 hit:-18 hitch:35 hm:81 hmm:49 home:28
horario:-20 how:-63 how__i:-25 how__you:-37 how_do:-60 how_long:23 huh:35 husband:-18 i__a:29 i__bring:-20 i__in:-20
i__it:-19 i__my:61 i__need:-21 i__say:22 i__there:-24 i__to:91 i_am:41 i_bring:48 i_can:-51 i_cant:49 i_come:-42
i_do:-39 i_drop:21 i_got:21 i_know:-51 i_leave:53 i_mean:32 i_need:88 i_pay:29 i_speak:-22 i_talk:-27 i_talking:24
id:-30 idea:27 idea_$:43 ill:-57 ill_be:-21 ill_see:18 im__a:26 im__with:71 im_driving:67 im_in:19 im_not:-21
in_$:-38 in__waiting:18 in_a:50 in_my:-20 info:-38 info_$:-38 ingles:61 inspeccion:18 instead:20 into:33 into_the:38
invoice:48 invoice_$:53 ir:28 is:73 is_$:33 is__a:40 is__car:81 is__going:21 is__ok:26 is__really:-22 is__the:80
is__wifi:101 is_a:-73 is_gone:-18 is_it:-36 is_making:-23 is_my:156 is_on:45 is_the:53 is_there:104 is_this:-19
is_your:19 it:-91 it__and:34 it__if:35 it__me:24 it__to:28 it__under:-19 it_a:-20 it_again:58 it_is:-23 it_off:24
it_ok:30 it_the:19 jaja:43 jaja_$:35 jajaja:31 je:133 je__comprends:47 je_ne:76 jeje:18 juego:39 just:-45 keep:-25
key:52 key_$:22 knock:29 know:-62 know_you:-52 la__de:35 la__del:23 la__el:-19 la__es:24 la__o:21 la_aseguranza:19
la_bici:21 la_cita:-31 la_factura:60 la_garantia:30 la_llanta:-20 la_llave:19 la_luz:-19 la_pieza:26 la_sala:21
labor:-19 las_$:-40 las_llantas:-18 las_llaves:20 last_night:26 late:-28 later:19 later_$:19 le__a:-29 le__una:20
leave:53 leave_my:33 leave_the:19 let:-29 lets:-23 light:-40 like:-32 like_a:-18 link:34 list:-31 list_$:-25
llanta:-30 llantas:63 llave:19 llaves:20 llego:22 llegue:23 llegue_a:20 llevar:64 llevar__mi:18 llevarlo_$:-19 lo:-89
lo__a:-34 lo_puede:28 lo_puedo:-19 loaners_$:18 location:-60 location_$:-27 lol:85 lol_$:76 lol_no:29 long_is:20
look__my:18 luego:24 luego_$:56 lugar:-34 luz:-24 machine:24 main:-26 making:-28 mal:-24 mal_$:-21 manana:-26
manana_$:-23 mandan:77 mande:42 manden:-22 manejando:34 maquina:42 marca:41 marcar:-20 martes_$:-20 mas:-46 mas_$:-22
mas_tarde:23 may:26 me:-102 me_$:-34 me__el:66 me__la:21 me__mandar:19 me__marcar:-20 me__the:18 me__you:23 me_a:-44
me_again:-25 me_fue:34 me_i:24 me_mandan:72 me_off:-20 mean:22 mean_$:32 mecanico_$:-24 meeting:29 mensaje:65
mensajes:-55 mensajes_$:-32 mes:-21 message:93 message_$:39 message__i:22 message_me:-29 message_when:22 messages:-31
messages_$:-20 mi:24 mi__con:24 mi_cita:-20 mi_hijo:30 might:-19 mijo:26 mil:-34 mileage:-18 millas:-21 millas_$:-18
mis:34 mom:73 momento:18 monday_$:-23 more:-39 morning:-22 motor:-19 motorcycles:25 motorcycles_$:25 mucho:-42
must:-24 muy:-52 my:58 my__drop:63 my__go:43 my__oil:23 my__one:27 my__says:-26 my__too:69 my__will:-24 my_car:21
my_dog:35 my_husband:-18 my_invoice:30 my_number:-42 my_own:29 my_phone:30 my_son:28 my_spare:24 nada:-19 name:-23
nao:71 ne:76 ne__pas:76 ne_comprends:47 need__bring:63 need__change:30 need_a:-20 need_that:-31 need_to:95
neither:-21 ni:-62 night:53 night_$:34 ninos_$:24 no_$:-30 no__at:53 no__here:-27 no__me:23 no__you:18 no_estoy:30
no_gracias:25 no_hay:-18 no_idea:53 no_lo:21 no_noise:54 no_pero:29 no_thanks:34 nobody:-24 noise_$:-26 noise__all:55
noise_at:55 nomas:-28 non:29 north:-20 not:-26 not__me:-32 not_be:40 now:-49 now_$:-40 number:-38 number_$:-37 o:91
o__es:26 o_no:37 of__do:50 of_my:28 of_oil:37 of_the:22 of_you:-18 off_the:27 off_your:-18 office:56 office_$:18
oi:32 oil:41 oil_$:25 ok__the:23 ok_if:29 olvide:29 on:-21 on_$:-31 on__th:47 on__the:33 on_for:29 on_it:24 on_my:-31
one_$:19 only:-19 open:-102 open_$:-19 otro:-19 our:19 out_$:-29 out__the:31 out_of:32 own:26 own_oil:23 oye:66
pagar:25 pagos:30 paperwork:35 paperwork_$:35 para_cuando:-23 part:31 partes:51 partes_$:45 parts:21 pas:97 past:-18
pay:24 person_$:-27 phone_$:41 pick__up:18 pickup:-22 pieza:28 please_$:-41 pm_$:-26 pm_and:21 podria:18 ponen:51
por:-47 por_favor:-24 practice:20 precio:-46 precio_$:-31 prefiero:-21 price:-86 price_$:-27 puede:31 puede_$:-37
puede__mi:53 puede_esperar:-28 puedo_llevar:36 put_on:26 que:36 que_$:157 que__de:44 que__eso:-20 que_es:-29
que_le:-22 quick:-25 quick_$:-29 quien:19 quien__el:25 quien__y:20 quien_me:22 quienes:-19 quienes_son:-19 quote:-24
radio:19 rato:-21 read:21 ready:25 ready_$:38 really:-85 recibo:46 red:21 repair:20 replaced:-28 reply:57 report:27
respondo:50 revisan:72 revoke:-22 revoke_$:-18 right:38 right_now:50 ring:-37 ring_me:-25 robot:89 robot_$:76
room_$:39 sabado_$:-27 saben:42 sala:68 sale:24 same:-18 same_day:-39 says:-36 schedule:-21 se:-74 se__fue:33
se_lo:-27 se_me:28 seats:18 see:28 see__message:26 see_the:26 see_your:26 seguir:-38 sell:56 semana:-19 send:58
service:18 set:-37 shop:-45 shut:-22 shuttle:33 shuttle_$:26 si:-26 si_llego:20 si_lo:-24 si_pero:-30 si_puedo:25
side:-41 side_$:-32 sigo:-22 siguen_en:-18 sirve:27 snow:59 so:-57 sold:-31 someone__me:19 somewhere:19 son:-32
son_$:-31 son__it:41 sorry_i:55 soy:-24 spare:24 speak:-34 speak_to:-21 spring:-22 squeaking:34 st_$:-26 station:21
steering:-27 still:23 still__the:-24 stop:-36 street:-24 street_$:-20 su:123 sunday:-19 supposed:27 supposed_to:27
t:-25 take:41 take__off:-28 take_me:-22 take_my:-22 talk__a:-32 talk_to:-43 talking:22 talking_to:24 taller:-27
tambien:101 tambien_$:43 tan:-20 tap:19 tarde:24 tarjeta:66 tarjeta_de:28 tax:-21 te:57 te__luego:54 te_escribo:56
tech:-28 texting:-24 texting_me:-18 textos:-18 texts:-23 than:-20 thank:-38 thank_you:-37 thanks:25 thanks__you:27
that:-61 that_$:-52 that_for:20 that_is:-25 the_$:26 the__before:23 the__last:30 the__off:25 the__on:32 the__room:20
the__side:-33 the__too:20 the_address:-19 the_door:50 the_game:72 the_invoice:18 the_new:18 the_office:30 the_part:33
the_same:26 the_truck:-25 the_trunk:27 the_waiting:32 the_wrong:-24 them_$:-18 there:28 there_$:23 there__a:-35
there__charge:-25 there__to:45 there_is:-64 these:-30 this:-34 this_a:60 this_is:-22 through:27 through_$:41
thurs:-32 thursday_$:-27 thursday__is:18 tiene:-74 tienen:109 tienen_$:-26 tienen__de:70 tienen__el:-33
tienen__para:27 till:-18 time:-31 time_$:-39 time__it:59 time__you:-56 time_do:-54 time_is:44 tio:22 tire:-31
tires_$:-23 to_$:-19 to__it:-28 to__the:27 to_a:-21 to_be:56 to_bring:59 to_change:26 to_claim:23 to_drive:-32
to_get:18 to_the:-28 todavia:22 today:-42 today_$:-31 todo:-34 tomorrow_$:-27 too:33 too_$:78 took:-20 tortillas:50
tow:67 tow_hitch:22 trabajan:56 traded:20 trailer:28 trip:57 truck:-33 trunk:27 trunk_$:27 turned:37 una:39 under:-32
under_my:-19 up:-72 up_$:-20 urgent_$:-24 urgente:-25 use:40 used:39 used_cars:29 ustedes:42 ustedes_$:-58
vacaciones:-18 venden:114 vendi:-27 verdad_$:18 viene:-18 viernes_$:-39 voice:20 voy_a:-35 wait:-33 waiting:29
waiting_room:28 walk:23 want:32 warranty:27 warranty_$:-20 was__again:59 was__for:19 was_it:58 wash:22 way:-20
we_do:-26 weather:20 well:24 well_$:25 were:-25 what_$:43 what__do:-46 what__is:34 what__this:-21 what__was:87
what__you:-98 what_did:-38 what_do:-59 what_is:-22 what_time:84 when:-27 when__you:-26 when_do:-33 where__you:-28
where_are:-25 which__is:22 which_shop:-18 while:22 who__the:45 who__this:-21 who__you:-35 who_are:-35 why:-78
why_$:-23 why__you:-54 why_do:-54 wife:-28 wife_$:-21 wife__it:22 wifi:177 wifi_$:107 will__be:18 will__it:-42
will_do:-37 will_you:29 window:56 wipers:38 with_me:25 with_the:-19 won:64 work:-18 work_on:41 working:22 wrong:-36
wrong_person:-18 y:32 y_$:-25 y__es:-21 y__que:27 y_el:-21 y_eso:21 y_tambien:22 ya:-60 ya_$:-21 ya__mi:53 ya_esta:31
ya_no:-19 yep:29 yep__you:23 yes_$:-34 yes__you:52 yes_do:53 yes_i:-26 yo:-22 you:88 you_$:-107 you__a:154
you__an:-19 you__and:19 you__anything:-23 you__bot:39 you__checks:21 you__do:62 you__for:-31 you__have:-24 you__is:24
you__it:-21 you__me:-50 you__my:-28 you__on:54 you__open:-22 you__take:27 you__the:50 you__today:-23 you__used:44
you_a:78 you_are:-52 you_call:-44 you_can:-34 you_charge:-37 you_check:62 you_close:-38 you_do:33 you_got:26
you_have:62 you_keep:-21 you_need:-32 you_on:-34 you_open:-72 you_pick:18 you_put:31 you_see:34 you_sell:63
you_send:55 you_shut:-20 you_take:89 you_text:25 you_then:-20 you_there:26 you_use:21 you_work:26 your:56 your__is:44
your__when:22 your_message:30 your_records:-18 youre:-27
"""
