"""What speaks for and against `unclear`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "unclear"
BIAS = -70
WEIGHTS = """\
#abaj:25 #aben:65 #abla:45 #ablo:-24 #abor:-27 #acac:-27 #acce:30 #aced:-37 #acei:34 #acen:151 #acep:141 #ache:26
#achi:60 #actu:122 #adas:42 #addr:-54 #aded:24 #adel:-28 #adio:28 #ador:119 #adre:27 #afte:-24 #agai:50 #agal:-23
#agar:22 #agen:42 #ages:-45 #agos:36 #agua:-59 #ague:42 #ahor:-27 #aigo:-25 #aila:27 #aile:66 #aire:69 #aiti:39
#ajaj:69 #ajan:51 #ajes:-75 #akes:-64 #alam:32 #alan:45 #aler:-23 #algo:-46 #algu:28 #alia:29 #alin:28 #alki:27
#alle:-61 #allo:26 #allp:-58 #ally:-67 #alre:-44 #also:78 #alud:-25 #amag:-24 #amat:36 #ambi:47 #amen:-27 #amor:34
#amos:-45 #anas:63 #ance:-23 #anci:25 #anda:43 #ando:-92 #anej:64 #anks:23 #anne:-25 #anoc:27 #anol:34 #anos:70
#ansm:30 #ante:-44 #anti:57 #anty:36 #anym:40 #anyo:33 #anza:23 #aper:32 #apid:-23 #appo:-27 #apto:22 #aqui:82
#aran:60 #ards:62 #area:24 #aren:-30 #arge:-60 #aria:-25 #arje:83 #arle:61 #arli:-39 #arly:-47 #arme:-75 #aron:-67
#arou:-29 #arra:40 #arre:30 #arro:30 #arse:31 #arti:107 #arts:33 #asap:-29 #aseg:60 #asse:37 #asta:-34 #aste:65
#atan:77 #atch:-54 #ater:49 #atic:87 #atio:22 #atis:-54 #ativ:-38 #ator:-45 #atra:-33 #atul:68 #auto:181 #aves:24
#avia:29 #avin:-27 #baja:37 #ball:-63 #band:-31 #bano:82 #bate:22 #been:-26 #befo:-24 #bend:-25 #best:-25 #biar:-23
#bici:48 #bien:81 #bike:59 #blan:90 #blar:-33 #blem:-24 #bles:-37 #blig:-23 #bloc:59 #body:-38 #bonj:103 #borr:-24
#brak:-43 #brig:73 #brin:129 #bscr:-29 #caci:-25 #cade:31 #cafe:32 #call:-53 #camb:-83 #came:-49 #cant:30 #canz:-24
#card:109 #care:-25 #carr:36 #cars:53 #cart:24 #casa:50 #cash:38 #cati:-63 #ceit:34 #cell:-23 #cept:141 #cerc:42
#cerl:-22 #chai:32 #char:-72 #ched:-31 #chem:-22 #cher:32 #ches:24 #chin:34 #cial:-43 #cibe:23 #cibo:65 #cita:-68
#cked:85 #cker:-25 #ckin:-29 #ckup:-28 #clai:27 #clea:35 #cles:36 #clic:112 #clim:37 #clos:-40 #cobr:-66 #code:76
#coff:26 #coma:39 #comp:89 #cond:23 #cong:78 #cont:37 #corn:41 #cost:-78 #coul:25 #cove:-32 #cred:130 #crui:32
#cted:22 #ctic:24 #ctio:-29 #ctri:62 #ctua:41 #ctur:107 #cuan:30 #cuar:-26 #cuen:-70 #cupo:39 #curr:62 #cycl:54
#dama:-24 #dame:-25 #darm:-23 #davi:29 #days:-55 #ddre:-54 #deal:-27 #deci:-22 #deja:39 #deje:-58 #dela:-24 #dele:-34
#deli:57 #delo:-24 #deme:-44 #depo:48 #desc:-80 #deta:36 #didn:-22 #dies:46 #digo:78 #dijo:33 #dimo:-23 #dire:-67
#disc:-27 #disp:43 #dist:78 #dito:110 #does:47 #domi:-37 #dond:60 #dont:-30 #door:57 #dora:42 #dore:56 #down:-61
#dres:-67 #driv:32 #drop:101 #dshi:24 #dule:-38 #dura:29 #eaci:40 #eage:-24 #eaki:32 #eall:-122 #earl:-88 #ease:-44
#eats:27 #eave:66 #eces:-73 #eche:22 #echi:-27 #ecia:-82 #ecib:89 #ecio:-76 #ecoj:27 #ecte:24 #ectr:62 #edal:-25
#edes:50 #edit:123 #edul:-38 #eels:-30 #eeri:-37 #eeti:54 #efie:-26 #efor:-24 #egal:22 #egla:65 #egue:31 #egui:-58
#egur:58 #eite:34 #eith:-46 #ejan:87 #ejar:43 #ejem:-30 #elan:-34 #elec:86 #eliv:59 #ello:-83 #else:-24 #emai:72
#eman:-32 #emas:-25 #empr:-56 #empt:34 #ende:109 #endi:-51 #endo:39 #ends:45 #enen:129 #engi:-35 #engl:26 #enme:-79
#enos:-54 #ente:31 #enti:-35 #entl:58 #ento:-46 #ents:29 #epai:34 #epla:-31 #eply:75 #epos:46 #epta:150 #eran:-29
#erar:-69 #erca:42 #erde:-22 #erdi:-22 #ered:38 #erem:22 #eren:-50 #eres:31 #eria:32 #erin:-36 #erio:-27 #erlo:-25
#erne:-25 #erst:32 #erti:55 #erwo:49 #escr:49 #escu:-70 #esda:-24 #esel:43 #espa:35 #espe:-41 #espo:50 #essa:51
#esta:45 #este:25 #esto:-44 #etai:37 #eter:-44 #ethe:25 #etin:49 #evar:92 #even:-24 #ever:-94 #evis:37 #evok:-28
#eway:-23 #exam:64 #expl:-24 #exti:-35 #exto:-28 #exts:-32 #fact:93 #feel:-27 #fell:54 #fere:-22 #ffee:26 #ffic:64
#ffle:32 #fica:25 #fice:77 #fier:-31 #filt:-22 #fina:30 #fine:-24 #fini:-51 #firs:-30 #flee:22 #floo:23 #fore:-41
#forg:-24 #foto:48 #four:-36 #free:-49 #fren:-90 #from:31 #fter:-24 #fuga:-23 #gado:83 #gain:50 #gala:22 #gale:-26
#game:87 #gana:72 #gano:37 #gara:47 #gato:24 #gend:-65 #gent:-29 #ghts:-24 #gift:66 #gine:-35 #give:-22 #glan:71
#glas:55 #gles:106 #glis:26 #goin:-35 #good:-31 #grab:26 #grad:-25 #grav:-23 #grea:-35 #grua:58 #gual:-28 #guar:67
#guie:38 #guir:-57 #gura:60 #habl:26 #hace:94 #haha:70 #hair:24 #half:24 #hanc:-29 #hank:-25 #harg:-68 #head:-36
#hedu:-38 #hell:-72 #help:-24 #heme:-22 #here:109 #hese:-40 #hiel:40 #hijo:39 #hile:31 #hina:-27 #hine:53 #hitc:53
#hole:-26 #home:36 #hora:-50 #hous:-29 #hrou:41 #hurs:-55 #husb:-30 #hutt:42 #iado:31 #iben:23 #ible:-27 #icat:30
#icku:-28 #icos:64 #ictu:25 #idad:23 #idea:38 #ider:29 #idnt:-22 #ieja:25 #ield:33 #iemp:-31 #iend:28 #iere:-29
#iero:-31 #iese:47 #ieza:42 #ific:32 #ight:-34 #igua:-33 #ilea:-22 #ilen:26 #iler:45 #illa:42 #imag:155 #imat:-27
#imos:-26 #impi:58 #indo:79 #inds:24 #inea:41 #ines:31 #info:-53 #ingl:94 #ingo:-44 #inis:-48 #inne:76 #insp:45
#inst:44 #intm:-26 #into:48 #invo:71 #ione:51 #ions:85 #ious:-38 #iper:65 #ippe:-31 #irec:-67 #irin:107 #irst:-30
#irve:43 #isan:99 #isar:-26 #isit:-30 #issi:-22 #iste:57 #itch:36 #ithe:-46 #itin:35 #itte:26 #iver:50 #ivin:72
#jaja:181 #jeje:65 #jeme:-27 #jeta:83 #jueg:79 #just:-62 #keep:-36 #knoc:25 #know:-86 #labo:-27 #laim:27 #lain:-32
#lass:40 #lati:61 #lava:33 #lave:59 #lcan:-24 #ldnt:-29 #lean:36 #leas:-27 #leav:51 #lect:86 #leet:22 #left:-23
#lego:30 #legu:29 #lenc:26 #lent:43 #lers:35 #less:-39 #leva:74 #lick:39 #lien:-33 #lier:-35 #ligh:-67 #like:-47
#limp:51 #line:29 #link:39 #list:-69 #live:34 #lkin:27 #llam:-51 #llan:36 #llas:31 #llav:60 #lleg:54 #ller:-30
#llev:69 #llpa:-58 #loan:26 #loca:-85 #lock:67 #loor:29 #lose:-39 #love:23 #lowe:33 #lpar:-58 #lrea:-44 #lueg:32
#luga:-46 #lvid:29 #mach:54 #madr:33 #mage:132 #mail:66 #maki:-30 #male:22 #mana:-64 #mand:109 #mane:40 #maqu:60
#marm:-29 #mart:-33 #mati:81 #mayo:-26 #mber:-22 #mbia:-28 #mbie:104 #mbio:-29 #mbre:29 #meet:59 #memb:25 #ment:26
#mess:64 #mete:-24 #mewh:25 #mien:23 #migh:-26 #mijo:33 #mile:-38 #mill:-36 #mind:-32 #ming:-61 #misi:37 #miss:-26
#moni:30 #morn:-25 #most:-23 #moto:101 #move:-43 #mpan:-25 #mpia:58 #mple:61 #mpty:35 #mput:37 #much:-67 #must:-30
#nada:-28 #nado:23 #name:-47 #nanc:32 #nced:25 #ncel:-33 #nces:-22 #ncon:-26 #ndan:115 #nday:-34 #ndem:-31 #nden:131
#nder:-46 #ndin:-24 #ndow:87 #ndsh:24 #neac:40 #nece:-61 #neit:-29 #neja:80 #nest:-23 #neve:-24 #ngin:-33 #ngla:113
#ngle:93 #ngli:26 #ngra:76 #nigh:44 #ning:-54 #nino:29 #nion:40 #nish:-62 #njou:103 #nner:53 #nobo:-33 #nock:25
#noma:-37 #nort:-32 #noti:27 #nsmi:30 #nsor:25 #nspe:45 #nsta:22 #nste:26 #ntas:77 #nter:-31 #ntes:42 #ntia:48
#ntly:58 #ntme:-26 #ntra:63 #nuev:-45 #numb:-52 #nvoi:71 #nymo:40 #oane:27 #obli:-23 #obod:-33 #obot:108 #obra:-57
#obri:57 #ocat:-95 #ocke:71 #ocup:31 #odav:29 #oday:-51 #odri:22 #offe:41 #offi:77 #oger:-24 #oice:94 #oing:-36
#oint:-36 #okin:-26 #olar:25 #olvi:25 #omad:41 #omas:-39 #omat:131 #ombr:26 #omer:40 #omet:-24 #omew:24 #omin:-51
#ompl:-28 #ompr:90 #ompu:35 #onad:22 #onde:79 #ondi:22 #ondo:68 #onen:64 #ongr:76 #onit:26 #onjo:101 #only:-23
#ontr:73 #ooki:-25 #oone:-29 #open:-140 #orar:-28 #orcy:35 #ores:71 #orio:-29 #orki:27 #orma:-30 #orne:25 #orni:-25
#orra:33 #orre:-32 #orry:23 #orse:-25 #orth:-37 #orti:51 #oses:24 #osit:44 #ossi:-26 #otal:-27 #otif:23 #otor:40
#otro:-24 #ouch:31 #ound:-57 #oung:27 #oure:-34 #ours:-24 #oved:24 #over:-94 #owed:36 #pack:59 #paga:33 #pago:33
#pair:25 #pano:34 #pape:53 #park:-51 #part:220 #pass:22 #peak:-49 #pecc:22 #peci:-63 #peda:-25 #pera:-32 #perr:44
#pers:92 #perw:49 #peso:37 #phon:22 #pict:25 #pido:-22 #piez:42 #pint:23 #pita:-23 #plai:-30 #plan:-24 #poin:-34
#pond:73 #pone:61 #pong:-23 #pons:31 #posa:-24 #pose:32 #posi:36 #pped:-40 #ppin:-22 #ppoi:-27 #ppos:33 #prac:24
#prec:-63 #pref:-32 #pren:22 #pres:31 #pric:-122 #prin:-38 #prop:25 #ptan:170 #pued:23 #puer:37 #pull:-23 #quea:33
#qued:-39 #ques:33 #quic:-36 #quie:-26 #quin:61 #quit:-39 #quot:-34 #raba:49 #ract:28 #rado:-23 #raff:23 #rail:75
#rain:-48 #raja:23 #rake:-43 #rame:-57 #rand:23 #rano:-32 #rant:91 #ranz:47 #rapi:-26 #rari:-31 #raro:-42 #rata:54
#rati:-64 #rato:-40 #ratu:62 #rave:-23 #rcar:-29 #rcyc:35 #rdad:-24 #rdan:30 #reac:-23 #real:-121 #reca:-23 #recc:-22
#rece:23 #rect:-40 #refi:-26 #rega:25 #regl:55 #remi:71 #reno:-66 #rent:85 #repa:40 #repl:57 #resp:94 #ress:-62
#resu:-25 #revi:46 #revo:-29 #rgen:-43 #rger:34 #ribe:-33 #ribi:-24 #ribl:-23 #ribo:75 #rice:-123 #rico:46 #riga:61
#righ:33 #rinc:-23 #ring:117 #rios:46 #riou:-35 #ripp:-34 #rive:-52 #rivi:91 #rjet:83 #rkin:43 #rlie:-39 #rman:23
#rned:48 #rner:25 #rnes:-22 #rnin:-33 #robo:108 #rong:-47 #ront:-24 #room:71 #ropi:28 #roun:-45 #rran:66 #rreg:44
#rren:44 #rrit:30 #rros:118 #rted:-25 #rtes:42 #rtil:62 #ruck:-47 #ruis:32 #runk:33 #rvic:24 #rwor:49 #sabe:72
#saca:-45 #sada:56 #sage:92 #sala:134 #sale:27 #sali:-22 #salu:-25 #same:-29 #sary:-24 #says:-49 #sban:-30 #sche:-38
#scue:-67 #sday:-35 #self:-24 #sell:83 #sena:25 #send:71 #seri:-57 #shie:24 #shop:-70 #sibl:-35 #side:-35 #sigo:-34
#sile:26 #sing:-24 #sirv:42 #slot:-22 #smis:30 #snow:79 #sold:-39 #sona:22 #soon:-42 #sorr:27 #spac:-27 #spam:-24
#span:62 #spar:29 #spea:-49 #spit:-22 #spon:122 #spos:-32 #spri:-29 #sque:27 #ssag:75 #ssar:-23 #ssed:-36 #sses:52
#ssib:-23 #stal:25 #stan:62 #star:-65 #stat:27 #stee:-37 #stic:-35 #stil:28 #stim:-41 #stop:-82 #stre:-46 #stri:-30
#subs:-29 #supp:43 #tail:45 #take:22 #tala:25 #talk:46 #tall:-44 #tamb:130 #tand:26 #tant:-28 #tard:-32 #tarj:83
#tart:-23 #tati:29 #tead:26 #tede:51 #teer:-37 #tely:-22 #temp:-49 #tend:48 #tera:-35 #teri:36 #teve:-24 #text:-90
#than:-50 #that:-74 #thes:-40 #thin:-34 #this:-52 #thro:60 #thur:-44 #tica:28 #tice:29 #tico:35 #tido:95 #tiem:-24
#tifi:51 #till:67 #tima:-45 #time:-52 #tint:28 #tire:-36 #tiva:-24 #tive:-39 #tmen:-26 #toda:-30 #todo:-38 #toma:127
#took:-28 #torc:35 #tore:36 #tori:-23 #tort:72 #tota:-27 #town:-23 #trab:37 #trai:57 #trar:-25 #trat:55 #tree:-36
#tric:61 #trip:58 #truc:-52 #trun:33 #tter:-29 #ttle:50 #tual:38 #tula:68 #tura:110 #turb:81 #ture:23 #turn:44
#twic:-22 #twis:-22 #uali:26 #uall:52 #uard:59 #uare:-22 #ubre:22 #ubsc:-29 #ucho:-55 #ueak:42 #ueda:-28 #uede:27
#uego:98 #uena:-32 #uent:-74 #uera:22 #uerc:24 #uest:33 #ueva:-30 #ugar:-46 #ught:-25 #uick:-36 #uido:-24 #uien:28
#uina:56 #uise:30 #ulat:68 #uldn:-29 #umbe:-52 #umbr:22 #unda:-24 #unde:-49 #unge:26 #unio:62 #unta:-24 #uote:-34
#uppo:33 #uran:72 #urge:-30 #urne:48 #urre:60 #usad:72 #usan:67 #usba:-30 #used:53 #uste:45 #utom:124 #uttl:42
#vend:158 #veng:40 #vere:27 #vert:45 #very:-37 #vibr:-32 #vice:22 #vien:-27 #ving:32 #visa:66 #visi:-58 #voic:95
#voke:-28 #vuel:-24 #walk:31 #want:38 #ward:-27 #warr:36 #weat:35 #week:-26 #well:28 #went:-23 #were:-35 #when:-46
#whil:31 #wice:-22 #wife:-40 #wifi:233 #wind:112 #wipe:53 #wist:-22 #word:55 #work:42 #wors:-24 #wron:-47 #xtin:-34
#xtos:-26 #ycle:48 #ymen:64 #ymor:40 #your:34 %again_later:-113 %again_later%agree:-29 %again_later%car:-46
%again_later%car_part:41 %again_later%family:-26 %again_later%lift:-76 %again_later%message:-36
%again_later%money:-23 %again_later%noise:36 %again_later%on_way:34 %again_later%pay_day:-53 %again_later%phone:58
%again_later%place:-28 %again_later%season:-22 %again_later%staff:72 %again_later%start_again:83 %again_later%who:-23
%again_later%wrong_one:26 %agree:-99 %agree%bring:30 %agree%call_off:67 %agree%car:61 %agree%car_part:53
%agree%elsewhere:25 %agree%fails:23 %agree%family:60 %agree%how_long:49 %agree%lift:61 %agree%meaning:34
%agree%message:-25 %agree%money:140 %agree%noise:-53 %agree%on_way:22 %agree%pay_day:78 %agree%place:23
%agree%question:-65 %agree%thanks:-34 %agree%who:23 %away:-42 %away%bring:-24 %away%car:27 %away%message:41
%away%odometer:-24 %away%on_way:-34 %away%phone:47 %away%question:23 %away%refuse:23 %away%shift_it:-24
%away%staff:91 %away%start_again:23 %bad:-197 %bad%car_part:-37 %bad%do_it:-26 %bad%machine:-22 %bad%staff:-47
%bad%who:38 %bring:-69 %bring%busy:-51 %bring%call_off:30 %bring%car_part:44 %bring%do_it:27 %bring%elsewhere:57
%bring%fails:25 %bring%family:113 %bring%how_long:-22 %bring%leave_me:-66 %bring%money:33 %bring%odometer:50
%bring%opening:42 %bring%question:38 %bring%refuse:86 %bring%season:32 %bring%shift_it:63 %bring%who:38
%bring%wrong_one:38 %busy:-68 %busy%call_off:22 %busy%phone:41 %busy%question:26 %busy%refuse:-24 %busy%shift_it:39
%call_off:-33 %call_off%do_it:-53 %call_off%elsewhere:44 %call_off%fails:45 %call_off%family:-31
%call_off%leave_me:-22 %call_off%machine:33 %call_off%money:75 %call_off%noise:27 %call_off%odometer:109
%call_off%on_way:-36 %call_off%phone:38 %call_off%place:37 %call_off%question:25 %call_off%refuse:-39
%call_off%season:-23 %call_off%shift_it:29 %call_off%start_again:-63 %call_off%thanks:70 %call_off%who:44
%car%car_part:-62 %car%do_it:32 %car%family:-49 %car%noise:-55 %car%odometer:22 %car%on_way:-29 %car%phone:35
%car%place:36 %car%question:48 %car%refuse:-85 %car%season:-22 %car%shift_it:-38 %car%staff:82 %car_part:-46
%car_part%fails:-103 %car_part%leak:-41 %car_part%lift:30 %car_part%machine:-29 %car_part%money:-55
%car_part%noise:-37 %car_part%odometer:-25 %car_part%on_way:-60 %car_part%pay_day:64 %car_part%phone:88
%car_part%place:-39 %car_part%season:52 %car_part%shake:-38 %car_part%shift_it:58 %car_part%smoke_smell:-22
%car_part%staff:39 %car_part%start_again:36 %do_it:-71 %do_it%family:-88 %do_it%leak:-24 %do_it%leave_me:42
%do_it%lift:-23 %do_it%money:45 %do_it%odometer:-33 %do_it%on_way:49 %do_it%question:-45 %do_it%refuse:39
%do_it%season:44 %do_it%staff:84 %do_it%who:31 %doubt:-43 %doubt%family:24 %doubt%lift:22 %elsewhere:-82
%elsewhere%family:-28 %elsewhere%message:-24 %elsewhere%money:38 %elsewhere%on_way:35 %elsewhere%phone:-25
%elsewhere%place:-42 %elsewhere%who:65 %elsewhere%wrong_one:32 %fails:-35 %fails%message:26 %fails%odometer:-32
%fails%on_way:22 %fails%place:47 %fails%question:50 %fails%refuse:22 %fails%staff:38 %family:72 %family%lift:-22
%family%message:47 %family%on_way:-31 %family%phone:-42 %family%question:67 %family%shift_it:99
%family%start_again:22 %family%who:-44 %gone_car:-45 %gone_car%question:42 %gone_car%refuse:53 %gone_car%wrong_one:36
%how_long:-159 %how_long%money:32 %how_long%place:31 %how_long%question:80 %how_long%shift_it:-32
%how_long%start_again:47 %leak:-96 %leave_me:-74 %leave_me%lift:48 %leave_me%on_way:76 %leave_me%opening:23
%leave_me%question:22 %lift:108 %lift%on_way:-37 %lift%place:35 %lift%wrong_one:26 %machine:327 %machine%message:35
%machine%phone:-35 %machine%question:36 %machine%staff:26 %meaning:-129 %meaning%money:30 %meaning%question:-26
%message%money:83 %message%phone:27 %message%place:24 %message%refuse:-22 %message%shift_it:45
%message%start_again:-95 %message%who:-26 %money:-163 %money%on_way:-43 %money%who:81 %noise:-23 %noise%odometer:-26
%noise%question:-42 %noise%refuse:34 %noise%start_again:41 %odometer:23 %odometer%on_way:53 %odometer%shift_it:-28
%odometer%staff:-46 %odometer%who:36 %on_way:-66 %on_way%opening:67 %on_way%place:76 %on_way%question:52
%on_way%refuse:-27 %on_way%staff:25 %opening:-241 %opening%question:-37 %opening%staff:-46 %pay_day%question:-28
%pay_day%season:-27 %phone:-97 %phone%question:32 %phone%refuse:32 %phone%staff:-93 %phone%wrong_one:-67 %place:-141
%place%start_again:-22 %place%wrong_one:33 %question:-141 %question%refuse:-49 %question%shift_it:-26
%question%staff:68 %question%start_again:49 %question%who:-30 %refuse:-89 %refuse%shift_it:111 %refuse%staff:-39
%refuse%thanks:36 %refuse%wrong_one:-34 %season:-40 %shake:-97 %shift_it:-99 %shift_it%staff:34 %smoke_smell:-80
%staff%start_again:23 %staff%who:50 %staff%wrong_one:28 %start_again:-90 %thanks:-151 %who:-54 %wrong_one:-102 @?:225
@car:-46 @confirm:-25 @nothing:34 @odometer:69 @offers:-35 @reading:-180 @time:37 @time_:-28 @times:-88
@walk_in_will_do:-37 ^_$:42 ^_about:24 ^_abren:-27 ^_aceptan:87 ^_actually:41 ^_after:-24 ^_am:29 ^_and:-81
^_anda:-23 ^_ando:-29 ^_any:-42 ^_are:111 ^_asap:-24 ^_ayuda:-29 ^_ballpark:-56 ^_been:-22 ^_can:-26 ^_cant:-57
^_car:-55 ^_cobran:-49 ^_como:28 ^_congratulations:68 ^_cost:-39 ^_couldnt:-22 ^_cuanto:69 ^_de:-98 ^_dejeme:-27
^_did:138 ^_do:-83 ^_does:32 ^_el:-35 ^_en:25 ^_eres:54 ^_es:-145 ^_ese:-25 ^_eso:-27 ^_esta:-79 ^_estan:54
^_estoy:23 ^_free:-22 ^_friday:43 ^_get:-38 ^_go:-28 ^_good:-33 ^_have:-33 ^_hay:-42 ^_hello:-71 ^_help:-31 ^_hey:168
^_hi:42 ^_hm:101 ^_hmm:61 ^_how:-52 ^_i:-144 ^_id:-23 ^_ill:-55 ^_info:-34 ^_is:102 ^_it:-59 ^_la:-82 ^_lo:-59
^_lol:107 ^_los:36 ^_mande:61 ^_mi:-28 ^_might:-22 ^_mom:28 ^_my:-68 ^_need:-26 ^_neither:-29 ^_ni:-37 ^_nobody:-22
^_not:-57 ^_olvide:42 ^_on:-32 ^_out:31 ^_oye:60 ^_para:-60 ^_por:-32 ^_precio:-35 ^_price:-37 ^_puedo:-84 ^_que:90
^_revoke:-28 ^_saturday:32 ^_se:-33 ^_sip:-24 ^_sorry:40 ^_steering:-36 ^_still:-61 ^_su:136 ^_take:-37 ^_that:-34
^_the:-61 ^_there:-79 ^_this:-23 ^_tiene:-42 ^_tienen:76 ^_tire:-23 ^_trabajan:60 ^_trae:-39 ^_voy:37 ^_want:29
^_we:-29 ^_wed:26 ^_were:-23 ^_what:40 ^_when:-22 ^_where:-32 ^_who:-26 ^_why:-97 ^_will:-56 ^_wipers:52 ^_y:-53
^_ya:-31 ^_yep:28 ^_yo:-41 ^_you:-240 a:-43 a__can:48 a__card:37 a__carro:-25 a__for:-38 a__from:24 a__hora:22
a__noise:-27 a__of:46 a__on:-54 a_bot:76 a_charge:-32 a_cruise:32 a_human:-53 a_la:-22 a_que:29 a_real:24 a_robot:35
a_shuttle:36 a_tow:26 about_the:31 ac:42 aceite:38 aceptan:164 aceptan_tarjeta:59 actually:42 address:-54
address_$:-60 after_i:-22 again:50 again_$:81 agendeme:-28 agua:-23 ahi:66 ahi_$:95 aire:70 aire_$:45 al:-67 algo:-30
all:-78 all_set:-27 already:-44 also:78 also__you:23 am:45 am_$:-32 am__talking:30 amor:39 an:-42 and__are:-77
and__i:22 and__my:27 and__there:36 and__you:123 and_can:66 and_do:89 and_i:-25 and_is:50 and_the:-29 and_you:-74
anda:-45 ando:-40 anoche:27 anoche_$:36 antes:-54 antes_$:-27 antes_de:-22 any:-62 anymore:40 anymore_$:48
anything_$:52 app:44 appointment:-23 aqui:22 aqui_$:39 are:50 are_$:-80 are__a:83 are__again:52 are__guys:-39
are__on:-43 are__still:33 are_they:24 are_we:47 area:28 arm:-24 around:-25 arreglan:71 as:-33 as_i:26 asap:-29
asap_$:-22 aseguranza:47 asi:-82 asi_$:-63 at:-41 at_$:-38 at__you:22 at_all:78 at_and:-22 auto:70 away_$:-26
away_from:47 ayuda:-30 ayuda_$:-27 back_$:41 ballpark:-58 ballpark_$:-57 be:23 be_a:31 be_the:29 be_there:-58
been:-26 before:-23 before_$:26 bendiciones:-22 best:-25 best_$:-24 bici:36 bien:-64 bien_$:-50 bike:38 bot:82
bot_$:58 brakes:-42 brand:51 bring:131 bring_it:-42 bring_my:70 btw:28 buen:-23 buenos:24 buenos_dias:24 but__you:24
buy:33 by:-67 by_the:-51 call:-42 call_my:-57 cambie:-22 cambio:-23 can:144 can__bring:60 can__check:82 can__come:-44
can__do:-112 can__drop:59 can__me:-24 can__pick:23 can__send:67 can__speak:-31 can__talk:-39 can__wait:-24 can_do:-44
can_i:33 can_my:188 can_we:-54 can_you:104 cant_do:-30 car_$:-35 car__the:41 car_is:-44 card:53 cards:57 cards_$:55
carro:-78 carro_$:25 carros:112 cars:42 cars_$:65 casa:40 cash:38 cat:36 cerca:44 change__appointment:35 charge:-75
charge_$:-32 charge_for:-40 check_$:-25 check_my:55 cierto:28 cita:-66 cita_$:-42 claim:27 claim_$:27 clic:59
click:73 closed:-23 cobran:-58 cobran_por:-29 code:76 coffee:27 comadre:41 come_at:-22 como__mi:24 compran:39
comprends:62 comprends_pas:62 con:-38 con_mi:-38 con_ustedes:-36 congratulations:68 corner:25 cost:-55 cost_$:-43
could:50 could__be:54 could_you:-28 couldnt:-25 covered:-27 cruise:32 cuanto__y:52 da:-25 dan:157 day:-106 day_$:-102
days:-27 de__o:23 de_aqui:-30 de_la:37 de_las:-25 de_llantas:59 de_que:-47 de_una:-38 dejar:47 dejeme:-27 del:22
descuento:-71 dia:-109 dia_$:-60 did:173 did_i:73 did_it:-28 did_my:59 did_you:64 didnt:-22 digo:-37 digo_$:-22
dijo:33 direccion_$:-26 directions:-43 do:99 do_$:-109 do__charge:-50 do__close:-45 do__do:65 do__guys:102
do__have:83 do__keep:-28 do__know:-60 do__need:37 do__open:-70 do__own:-34 do__sell:72 do__shut:-25 do__take:134
do__th:-24 do__use:29 do__work:35 do_friday:-38 do_i:-38 do_instead:-23 do_it:-77 do_my:-34 do_the:-41 do_they:-22
do_this:-22 do_you:447 does:63 does_it:45 dog:52 domingo:-25 donde:62 done_$:51 dont:-30 door:62 door_$:66 down:-35
down_$:-31 drive:-49 drive_$:-23 driving:91 driving_with:97 drop:93 drop__car:44 drop__off:40 drop_it:72 drop_off:25
earlier:-35 early:-45 early_$:-40 eh:45 eh_$:45 el:25 el__se:-32 el__tienen:23 el_aire:93 el_carro:-62 el_de:-23
el_dia:-30 el_martes:-27 el_recibo:42 el_viernes:-27 email:43 empty:35 en:-22 en__momento:27 en__sala:29 en_dos:25
en_este:39 engine:-34 entendi:31 era:39 eres:54 eres__o:34 es:-86 es_$:75 es_de:-31 es_el:35 es_eso:-27 es_gratis:-49
es_grave:-24 es_una:54 es_urgente:-30 es_usted:33 es_y:32 escribo:76 ese:-31 eso_$:-22 eso__lo:22 eso_me:22
espacio:-23 espanol:34 espera:68 espera_$:56 esperar:-67 esperar_$:-44 esposa:-24 esta:-37 esta_bien:-23 estan:37
este:41 este__no:24 este_momento:28 estimate:-26 esto:-23 esto_$:-31 estoy_de:-29 estoy_en:-32 estoy_manejando:101
even:-22 factura:83 favor:-37 favor_$:-27 feels:-29 fell:49 fin:-26 find_a:25 fine:-24 finish:-40 first:-30
first_$:-25 fix:30 fleet:22 floor:29 for:-31 for_$:-26 for_my:-23 for_the:34 foto:48 four:-35 four_$:-33 free:-50
free_$:-48 frenos:-60 frenos_$:-54 friday_$:-53 from:31 from_my:49 fue:25 fue_el:50 fuga:-23 game:102 gano:37
garantia:48 get__a:-49 get_a:33 get_me:-35 get_my:-25 gift:66 gift_card:43 give:-22 give_me:-23 go:36 going:-35
going_on:-44 gone_$:-22 good:-30 gracias_$:-29 gracias_por:27 gratis:-53 gratis_$:-47 grua:58 guys_$:-36 guys_do:89
guys_open:-25 hablan:97 hablar:-26 hablar_con:-41 hablo:-24 hace:-41 hacen:153 had:-29 half:24 has:-26 have__be:24
have__do:-26 have__wrong:-27 have_a:58 have_anything:-29 have_my:-27 have_the:-35 have_to:-31 have_you:22 hay:61
hay__en:31 hello:-71 help:-23 help_$:-29 here:84 here_$:56 hey:168 hi:42 hijo:40 hit:-23 hitch:44 hm:101 hmm:61
home:36 horario:-28 how:-76 how__i:-31 how__you:-51 how_do:-79 how_long:32 huh:43 husband:-25 i__a:38 i__all:-26
i__at:-22 i__bring:-27 i__in:-28 i__it:-27 i__my:77 i__need:-29 i__off:25 i__say:27 i__there:-32 i__to:123 i_am:57
i_bring:63 i_can:-65 i_cant:74 i_come:-59 i_do:-57 i_drop:31 i_got:27 i_know:-72 i_leave:72 i_mean:40 i_need:119
i_pay:36 i_speak:-32 i_talk:-39 i_talking:30 id:-36 idea:41 idea_$:62 ill:-76 ill_be:-27 ill_see:23 ill_take:-26
im:-25 im__a:40 im__with:96 im_driving:92 im_good:-27 im_in:31 im_not:-30 in_$:-51 in__waiting:23 in_a:72 in_my:-28
in_tuesday:-24 info:-51 info_$:-50 ingles:85 inspeccion:22 instead:26 into:50 into_the:56 invoice:71 invoice_$:78
ir:35 is:92 is_$:50 is__a:54 is__car:114 is__free:-22 is__going:27 is__ok:34 is__really:-31 is__that:22 is__the:112
is__wifi:141 is_a:-100 is_gone:-23 is_it:-54 is_making:-34 is_my:219 is_on:64 is_the:72 is_there:127 is_this:-28
it:-105 it__and:44 it__if:44 it__me:29 it__to:35 it__under:-27 it_a:-26 it_again:87 it_is:-22 it_off:32 it_ok:38
it_the:23 jaja:57 jaja_$:46 jajaja:40 je:176 je__comprends:62 je_ne:106 jeje:23 juego:48 just:-59 keep:-32 key:67
key_$:30 knock:36 know:-84 know_you:-74 la__de:44 la__del:28 la__el:-26 la__es:30 la__o:26 la_aseguranza:24
la_bici:26 la_cita:-44 la_factura:84 la_garantia:37 la_llanta:-28 la_llave:25 la_luz:-26 la_pieza:32 la_sala:26
labor:-27 las_$:-49 las_llantas:-26 las_llaves:25 last_night:38 late:-36 later:27 later_$:30 le__a:-42 le__una:26
leave:71 leave_my:47 leave_the:24 left:-23 let:-38 lets:-26 light:-56 light__on:-22 light_is:-26 like:-40 like_a:-22
link:41 list:-42 list_$:-34 llanta:-41 llantas:83 llantas_$:-28 llave:25 llaves:25 llego:31 llegue:30 llegue_a:25
llevar:84 llevar__mi:23 llevarlo_$:-29 lo:-118 lo__a:-44 lo__la:22 lo_puede:35 lo_puedo:-24 location:-86
location_$:-39 lol:115 lol_$:96 lol_no:42 long_is:25 look__my:22 luego:32 luego_$:78 lugar:-41 luz:-31 machine:38
main:-39 making:-41 making_a:-25 mal:-32 mal_$:-30 manana:-31 manana_$:-29 mandan:112 mande:53 manden:-30
manejando:42 maquina:60 marca:59 marcar:-28 martes:-26 martes_$:-25 mas:-55 mas_$:-31 mas_tarde:33 may:33 mayo:-22
me:-129 me_$:-52 me__el:90 me__la:27 me__mandar:24 me__marcar:-28 me__the:23 me__you:28 me_a:-60 me_again:-36
me_fue:42 me_i:30 me_mandan:106 me_off:-29 mean:26 mean_$:40 mecanico:-23 mecanico_$:-32 meeting:45 mensaje:85
mensajes:-75 mensajes_$:-45 mes:-26 message:122 message_$:48 message__i:28 message_me:-41 message_when:28
messages:-42 messages_$:-29 mi:33 mi__con:30 mi_cita:-27 mi_esposa:-24 mi_hijo:43 mientras:22 might:-24 mijo:33
mil:-44 mileage:-22 millas:-25 mis:46 mismo:-25 mom:99 momento:23 monday_$:-30 more:-51 morning:-28 motor:-25
motorcycles:33 motorcycles_$:33 mucho:-54 must:-30 muy:-70 muy_mal:-22 my:67 my__are:-22 my__drop:85 my__go:62
my__key:24 my__oil:26 my__one:33 my__says:-38 my__too:94 my__will:-33 my_arm:-22 my_car:28 my_dog:44 my_husband:-24
my_invoice:45 my_number:-59 my_own:35 my_phone:42 my_son:39 my_spare:33 my_warranty:23 my_wife:-23 nada:-25 name:-29
nao:88 ne:106 ne__pas:106 ne_comprends:62 necesito:-22 necessary:-23 necessary_$:-23 need__bring:86 need__change:44
need_a:-24 need_that:-44 need_to:126 neither:-29 ni:-82 night:74 night_$:44 ninos_$:33 no_$:-45 no__at:79
no__here:-39 no__me:29 no__you:22 no_estoy:43 no_gracias:33 no_hay:-23 no_idea:78 no_lo:26 no_noise:80 no_pero:36
no_thanks:43 nobody:-32 noise_$:-39 noise__all:81 noise_at:81 nomas:-37 non:36 north:-32 not:-40 not__me:-47
not_be:57 now:-65 now_$:-52 number:-50 number_$:-51 o:117 o__es:32 o_no:46 of:23 of__do:67 of_my:40 of_oil:51
of_the:34 of_you:-23 off_my:24 off_the:39 off_your:-26 office:77 office_$:28 oi:40 oil:55 oil_$:31 ok:24 ok__the:29
ok_if:36 olvide:42 on:-33 on_$:-42 on__th:69 on__the:49 on_for:42 on_it:31 on_my:-46 one_$:25 only:-23 open:-132
open_$:-24 otro:-24 our:24 out_$:-39 out__the:46 out_of:43 own:32 own_oil:26 oye:82 pagar:31 pagos:37 paperwork:49
paperwork_$:49 para_cuando:-34 part:39 partes:69 partes_$:62 parts:28 pas:132 past:-22 pay:30 pedal:-23 person_$:-36
phone_$:56 pick__up:22 pickup:-28 pieza:35 pieza_$:22 please_$:-53 pm_$:-35 pm_and:26 podria:23 ponen:64 por:-62
por_favor:-29 possible:-23 practice:25 precio:-61 precio_$:-43 prefiero:-26 price:-119 price_$:-36 puede:38
puede_$:-48 puede__mi:72 puede_esperar:-41 puedo_llevar:48 put_on:38 que:46 que_$:221 que__de:61 que__eso:-30
que_es:-45 que_hora:22 que_le:-32 que_tiene:-26 quick:-35 quick_$:-40 quien:27 quien__el:31 quien__y:25 quien_es:-24
quien_me:29 quienes:-26 quienes_son:-26 quieren:-22 quote:-33 radio:30 rapido:-22 rato:-29 read:26 ready:31
ready_$:47 really:-122 recibo:65 red:26 repair:25 replaced:-37 reply:75 report:39 respondo:69 revisan:100 revoke:-28
revoke_$:-24 right:55 right_now:71 ring:-51 ring_me:-36 robot:115 robot_$:99 room:26 room_$:53 sabado_$:-34 saben:53
sala:96 sale:31 same:-28 same_day:-55 sat:-22 says:-49 schedule:-30 se:-95 se__fue:41 se_lo:-34 se_me:36 seats:22
see:35 see__message:33 see_the:40 see_your:33 seguir:-57 sell:74 semana:-25 send:78 service:24 set:-52 set_$:-22
shop:-62 shop_is:-23 shut:-27 shuttle:42 shuttle_$:34 si:-39 si_llego:25 si_lo:-37 si_pero:-42 si_puedo:32 side:-58
side_$:-47 sigo:-34 siguen_en:-26 sip:-24 sip_$:-24 sirve:35 slot:-22 slot_$:-22 snow:81 so:-70 sold:-41
someone__me:24 somewhere:25 son:-39 son_$:-42 son__it:55 sorry:27 sorry_i:82 soy:-29 spam:-24 spare:32 spare_key:24
speak:-47 speak_to:-28 spring:-29 spring_$:-23 squeaking:51 st:-22 st_$:-38 station:31 steering:-37 still:30
still__the:-33 still_good:23 stop:-47 street:-33 street_$:-28 su:171 sunday:-23 supposed:34 supposed_to:34 t:-34
take:49 take__off:-41 take_me:-30 take_my:-31 talk__a:-47 talk_to:-60 talking:28 talking_to:30 taller:-37 tambien:131
tambien_$:56 tan:-23 tap:24 tarde:32 tarde_$:25 tarjeta:83 tarjeta_de:34 tax:-28 te:80 te__luego:78 te_escribo:80
tech:-41 tell_me:-23 temprano:-22 terrible:-22 texting:-32 texting_me:-23 textos:-26 texts:-32 th_$:27 than:-24
thank:-46 thank_you:-45 thanks:32 thanks__you:34 that:-73 that_$:-71 that_for:24 that_is:-32 the_$:33 the__before:35
the__last:44 the__off:37 the__on:40 the__person:-23 the__room:25 the__side:-48 the__too:26 the_address:-29
the_best:-24 the_door:71 the_game:104 the_invoice:27 the_messages:-23 the_new:23 the_office:46 the_part:41
the_same:32 the_truck:-35 the_trunk:33 the_waiting:39 the_wrong:-31 them_$:-22 there:33 there_$:37 there__a:-48
there__charge:-33 there__to:56 there_is:-89 these:-40 these_messages:-22 this:-52 this__the:-23 this_a:87 this_is:-30
though:22 through:41 through_$:60 thurs:-44 thursday_$:-34 thursday__is:22 tiene:-106 tienen:131 tienen_$:-37
tienen__de:99 tienen__el:-47 tienen__para:35 till:-22 time:-35 time_$:-56 time__it:88 time__you:-73 time_do:-72
time_is:65 tio:27 tire:-43 tires_$:-35 to__it:-37 to__the:36 to_a:-34 to_be:69 to_bring:80 to_change:39 to_claim:29
to_do:-24 to_drive:-42 to_get:23 to_the:-35 todavia:29 today:-51 today_$:-39 todo:-44 tomorrow_$:-33 too:40 too_$:98
took:-28 tortillas:62 tow:85 tow_hitch:28 trabajan:79 trabajando:-24 traded:24 trailer:38 trip:82 truck:-46 trunk:33
trunk_$:34 turned:53 twice:-22 un_carro:-22 una:50 under:-45 under_my:-28 up:-93 up_$:-25 urgent_$:-32 urgente:-34
use:55 used:53 used_cars:39 ustedes:51 ustedes_$:-76 vacaciones:-27 venden:157 vendi:-33 verdad_$:22 viene:-24
viernes_$:-54 voice:24 voy_a:-44 wait:-43 waiting:39 waiting_room:37 walk:32 want:42 warranty:36 warranty_$:-29
was__again:88 was__for:23 was_it:87 was_just:-22 wash:27 way:-28 we_do:-36 weather:25 wed:22 well:29 well_$:30
went:-23 were:-35 what_$:52 what__do:-59 what__is:47 what__this:-30 what__was:123 what__you:-132 what_did:-52
what_do:-78 what_is:-32 what_time:126 wheel:-27 when:-31 when__you:-31 when_do:-40 where:-22 where__you:-38
where_are:-33 which__is:26 which_shop:-23 while:31 who__the:56 who__this:-26 who__you:-45 who_are:-44 why:-106
why_$:-34 why__you:-71 why_do:-71 wife:-37 wife_$:-30 wife__it:33 wifi:233 wifi_$:140 will__be:23 will__it:-58
will__there:-22 will_do:-48 will_you:37 window:78 wipers:56 with_me:31 with_my:-22 with_the:-28 won:85 work:-25
work_$:-23 work_on:52 working:27 wrong:-47 wrong_person:-26 y:41 y_$:-33 y__es:-25 y__que:33 y_el:-30 y_eso:26
y_tambien:28 ya:-76 ya_$:-29 ya__mi:77 ya_esta:49 ya_no:-24 yep:39 yep__you:28 yes:-22 yes_$:-43 yes__you:66
yes_and:25 yes_do:67 yes_i:-36 yo:-34 you:95 you_$:-139 you__a:194 you__an:-27 you__and:24 you__anything:-30
you__bot:46 you__checks:24 you__do:83 you__for:-38 you__have:-35 you__is:31 you__it:-23 you__me:-75 you__my:-43
you__on:78 you__open:-28 you__take:36 you__the:70 you__today:-29 you__used:59 you_a:94 you_are:-76 you_call:-63
you_can:-43 you_charge:-50 you_check:82 you_close:-48 you_do:38 you_got:32 you_have:73 you_keep:-28 you_need:-45
you_on:-49 you_open:-94 you_pick:22 you_put:45 you_see:49 you_sell:82 you_send:74 you_shut:-25 you_take:111
you_tell:-22 you_text:39 you_then:-25 you_there:44 you_use:31 you_work:35 your:69 your__is:62 your__when:28
your_message:37 your_records:-22 youre:-34
"""
