"""What speaks for and against `unclear`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "unclear"
BIAS = -51
WEIGHTS = """\
#abel:-14 #aben:56 #abin:-14 #abla:57 #able:-28 #ablo:-21 #abor:-29 #abue:18 #acac:-28 #acce:38 #acci:15 #aced:-28
#acei:34 #acen:109 #acep:110 #acer:-19 #achi:49 #acio:25 #acke:17 #acti:-21 #actl:-23 #actu:137 #adas:45 #addr:-43
#aded:-18 #adel:-21 #aden:18 #ades:19 #adie:-21 #adio:21 #ador:100 #adre:23 #afte:-24 #afue:27 #agai:60 #agar:19
#agen:21 #ages:-39 #agos:23 #agra:-15 #agua:-48 #ague:45 #ahea:-19 #ahor:-15 #aigo:-17 #aile:53 #aint:25 #aire:57
#airs:17 #aiti:44 #ajaj:78 #ajan:23 #ajes:-71 #aken:-20 #akes:-53 #alan:27 #alar:23 #alca:-19 #alen:-18 #aler:-23
#ales:-22 #algo:-31 #alia:38 #alie:-14 #alin:42 #alki:26 #alle:-45 #allo:14 #allp:-46 #ally:-39 #alme:-18 #almo:-20
#alre:-48 #alri:-27 #also:50 #alud:-34 #amac:14 #amag:-20 #amam:-15 #amat:46 #ambe:15 #amen:-28 #amor:18 #amos:-48
#anan:15 #anas:64 #ance:-43 #anci:14 #anda:36 #ande:26 #andm:-19 #ando:-81 #ands:-15 #anej:57 #aner:32 #anks:30
#anme:-15 #anne:-25 #anoc:21 #anol:20 #anos:45 #ansm:26 #ante:-26 #anty:35 #anym:42 #anyw:14 #apar:-22 #aper:33
#apid:-16 #appe:-21 #appo:-26 #appy:-25 #apto:30 #apun:-27 #aqui:68 #arda:-27 #ards:43 #area:32 #aren:-37 #arge:-53
#aria:-31 #arin:-19 #arje:67 #arki:16 #arle:46 #arli:-30 #arlo:26 #arly:-37 #arme:-66 #aron:-68 #arou:-27 #arra:34
#arre:34 #arri:16 #arro:15 #arse:26 #arte:21 #arti:97 #arto:15 #arts:41 #asad:-14 #asap:-46 #asca:-14 #aski:-16
#asse:40 #asta:-24 #aste:55 #atan:66 #atch:-72 #ater:25 #atic:71 #atio:17 #atis:-41 #ativ:-42 #ator:-40 #atra:-22
#atul:56 #atur:26 #auto:156 #avid:-14 #avin:-28 #avis:-24 #away:17 #aybe:-16 #ayed:17 #ayud:-17 #baja:34 #ball:-50
#band:-20 #bano:69 #bath:20 #been:-24 #bend:-27 #best:-24 #bett:-21 #betw:-14 #biar:-25 #bici:63 #bien:38 #bike:33
#bill:-18 #birm:-14 #blam:-19 #blan:82 #blar:-14 #blem:-16 #bles:-40 #blig:-24 #bloc:57 #blue:17 #body:-32 #boom:17
#borr:-32 #both:-24 #brak:-45 #bras:17 #brat:-17 #brig:75 #brin:96 #bscr:-32 #buel:18 #buen:-15 #burn:-15 #busi:-17
#buzo:31 #bvio:-20 #cabe:-16 #cabi:-14 #caci:-25 #cade:41 #cafe:16 #cale:-18 #call:-54 #camb:-70 #came:-69 #canc:-28
#canz:-19 #card:77 #care:-23 #carr:21 #cars:50 #cart:14 #casa:47 #casc:-14 #cati:-57 #ccep:14 #ccid:18 #ccio:-18
#ceit:34 #cele:-19 #cell:-21 #celu:18 #cept:119 #cerc:29 #cerl:-14 #cesa:-14 #cesi:-17 #chai:40 #chan:-17 #char:-64
#chea:-14 #chec:16 #ched:-24 #chem:-36 #cheq:17 #chin:23 #chis:27 #choc:16 #cial:-39 #cian:21 #cibo:66 #cide:16
#cita:-65 #cked:91 #cket:24 #ckin:-37 #ckup:-17 #clam:21 #clas:-16 #clea:29 #cles:36 #clic:104 #clie:-20 #clos:-32
#cobr:-57 #coff:22 #coma:34 #come:-30 #como:21 #comp:74 #cond:23 #cong:74 #cono:14 #cons:-26 #cont:29 #cool:-20
#corn:25 #cost:-57 #coul:24 #coun:-22 #cove:-15 #crac:14 #creo:-14 #crui:30 #cted:25 #ctic:32 #ctio:-30 #ctiv:-30
#ctly:-23 #ctri:38 #ctua:51 #ctur:96 #cual:-26 #cuan:32 #cuar:-23 #cuen:-59 #cupo:26 #curr:58 #cust:-14 #cycl:61
#dale:-14 #dama:-20 #dame:-27 #darm:-19 #dash:-26 #days:-43 #ddre:-43 #deal:-25 #deci:-22 #deja:35 #deje:-71
#dejo:-16 #dela:-15 #dele:-47 #deli:56 #deme:-43 #dena:25 #dent:22 #depe:-14 #desc:-71 #desd:19 #desp:-24 #deta:33
#dias:15 #didn:-14 #dies:29 #diff:-18 #digo:83 #dijo:43 #dimo:-20 #dire:-60 #dist:74 #dito:133 #dnes:-15 #does:27
#dome:-17 #domi:-44 #dond:20 #dont:-23 #door:46 #dora:36 #down:-61 #dres:-57 #driv:38 #drop:100 #dshi:18 #dule:-32
#dura:16 #each:-17 #eaci:48 #eady:-24 #eage:-21 #eaki:32 #eale:-18 #eall:-96 #eand:-18 #eard:19 #eari:-19 #earl:-70
#earn:28 #ease:-60 #eath:15 #eave:30 #eavi:-18 #ebod:-15 #ecal:-14 #ecar:30 #eces:-76 #echi:-26 #ecia:-65 #ecib:72
#ecio:-57 #ecir:-15 #ecla:23 #econ:-24 #ecte:26 #ectr:38 #edal:-17 #edan:-18 #edes:29 #edia:-14 #edne:-15 #edul:-32
#eeke:-15 #eels:-25 #eeri:-27 #eeti:53 #efec:21 #efie:-20 #efon:-16 #egal:19 #egat:-24 #egla:63 #egue:34 #egui:-67
#egur:28 #eird:-17 #eite:34 #eith:-38 #ejan:83 #ejar:36 #ejel:-14 #ejem:-33 #ejen:-16 #ejor:-21 #eken:-15 #elan:-24
#elec:65 #elef:-16 #eliv:60 #eliz:-27 #ello:-74 #else:-15 #elta:-16 #elul:18 #emai:44 #eman:-22 #embe:14 #emem:19
#emen:-16 #emin:-18 #emov:-20 #empe:-16 #empo:-18 #empr:-36 #empt:34 #enco:-25 #enda:-30 #ende:95 #endi:-48 #endr:-20
#ends:40 #enen:137 #enes:-23 #engi:-27 #enla:14 #enme:-73 #enos:-41 #ente:21 #enti:-35 #entl:55 #ento:-39 #ents:35
#eopl:-15 #epen:-18 #epla:-31 #eply:76 #epta:108 #equi:-14 #eran:-21 #erar:-60 #erat:-15 #erca:29 #erde:-27 #erdi:-20
#erdo:14 #ered:32 #eren:-43 #eres:33 #eria:21 #erin:-37 #erio:-23 #erlo:-18 #erne:-39 #erni:-17 #eros:25 #erra:-17
#erso:17 #erst:23 #erta:14 #erti:54 #erva:-19 #ervi:14 #erwo:50 #escr:58 #escu:-61 #esda:-25 #esde:19 #eser:-18
#esit:-17 #esnt:-18 #espa:21 #espe:-25 #espo:35 #essa:32 #esse:-16 #esta:74 #este:17 #esto:-37 #eter:-34 #etin:50
#ette:-24 #etwe:-14 #evar:80 #evas:-18 #even:-22 #ever:-82 #evis:29 #evok:-29 #eway:-20 #ewhe:17 #exac:-29 #exam:66
#expl:-21 #exti:-34 #exto:-25 #exts:-32 #fact:100 #fall:-17 #falt:18 #feel:-33 #feli:-18 #fell:39 #fere:-20 #ffee:22
#ffic:72 #ffle:42 #fica:14 #fice:79 #fici:19 #fier:-28 #filt:-37 #fina:29 #find:-19 #fini:-44 #firs:-26 #fixe:-17
#floo:22 #flor:14 #fore:-20 #four:-45 #free:-52 #fren:-80 #from:34 #fter:-24 #fuga:-25 #full:16 #fuma:17 #gado:98
#gain:60 #gale:-39 #game:88 #gana:71 #gand:-15 #gano:29 #gati:-24 #gato:38 #genc:22 #gend:-67 #ghts:-22 #gine:-28
#ging:-24 #give:-28 #givi:-19 #glan:64 #glas:49 #gles:95 #goin:-59 #golf:14 #gone:-28 #good:-28 #grab:34 #grad:-25
#grat:26 #grav:-24 #grea:-26 #gual:-26 #guan:-20 #guar:35 #guen:-16 #guie:20 #gura:37 #guys:-23 #habl:38 #hace:74
#haga:-24 #haha:74 #hair:40 #hama:14 #hanc:-35 #hank:-14 #happ:-32 #harg:-62 #have:-35 #head:-35 #heap:-14 #heca:29
#hedu:-32 #hell:-64 #help:-24 #hequ:17 #here:102 #hese:-30 #hich:-27 #hiel:37 #hijo:37 #hile:23 #hina:-26 #hine:40
#hing:-31 #hink:-17 #hitc:50 #hoco:20 #hole:-21 #home:58 #hora:-32 #hori:-19 #hosp:-17 #hour:-36 #hous:-24 #howl:-16
#hrou:42 #humb:-19 #hurs:-34 #husb:-19 #hutt:29 #iado:19 #iben:18 #ibir:-34 #ible:-18 #icat:16 #icia:18 #icie:-15
#icki:-17 #icku:-17 #icos:50 #idea:42 #ider:18 #idnt:-14 #ieja:22 #ield:30 #iemp:-30 #iera:-17 #ierc:-17 #iere:-21
#iern:-24 #iero:-28 #ierr:-17 #iffe:-18 #ific:24 #ight:-34 #igua:-30 #ilea:-20 #iled:14 #ilen:25 #iler:38 #iles:-21
#ilia:-14 #illa:50 #illi:16 #ilte:-14 #imag:154 #imat:-19 #imos:-23 #impi:51 #inat:15 #inca:-18 #ince:-17 #indi:22
#indo:93 #inds:17 #inea:43 #ines:22 #info:-56 #ingl:80 #ingo:-42 #ingu:-22 #inis:-41 #inne:59 #inos:25 #insi:15
#insp:25 #inst:14 #intm:-24 #into:48 #invo:81 #iona:24 #ione:50 #ions:67 #ious:-36 #iper:71 #ippe:-32 #ippi:-19
#iran:-22 #irec:-59 #irma:-16 #irst:-26 #isan:89 #isar:-28 #isit:-23 #ismo:-18 #issi:-21 #ista:-25 #iste:56 #itch:36
#ithe:-38 #itin:38 #itte:36 #ittl:23 #iver:44 #ivin:66 #ixed:-17 #jaja:200 #jalo:-20 #jeje:49 #jelo:-14 #jeme:-31
#jeta:67 #jueg:78 #just:-61 #keep:-29 #kend:-15 #keys:-15 #king:-24 #knoc:35 #know:-77 #ksgi:-19 #labo:-29 #lace:-27
#lado:-15 #lain:-25 #lame:-16 #lamo:-17 #lanc:-16 #lass:33 #late:-25 #lati:50 #lave:42 #lcan:-19 #ldin:16 #ldnt:-20
#leak:-15 #leas:-47 #leav:16 #lect:64 #lefo:-16 #left:-16 #legu:39 #lenc:25 #lent:36 #lers:21 #less:-37 #lete:-15
#lets:-22 #leva:69 #lgun:-15 #libr:26 #lick:34 #lien:-36 #lier:-29 #lies:16 #ligh:-56 #like:-51 #limp:43 #line:22
#ling:-24 #link:45 #list:-63 #litt:23 #live:36 #lkin:26 #llam:-65 #llan:35 #llas:39 #llav:42 #lleg:32 #ller:-28
#llev:61 #llpa:-46 #lmen:-18 #lmos:-18 #loan:37 #loca:-64 #lock:61 #long:22 #lood:-16 #loor:27 #lose:-39 #lost:-14
#loud:-14 #love:30 #lpar:-46 #lrea:-48 #lrig:-27 #lter:-18 #ludo:-23 #lueg:27 #luga:-55 #lula:18 #lvid:36 #mach:40
#maci:-18 #maco:14 #madr:28 #mage:135 #mail:62 #main:-29 #make:-17 #maki:-26 #mame:-16 #mana:-45 #mand:98 #mane:39
#mann:-20 #maqu:50 #mart:-28 #mati:59 #matt:24 #mayb:-16 #mayo:-19 #mbia:-42 #mbie:59 #mbio:-15 #mbre:30 #mean:26
#mebo:-15 #medi:-14 #meet:51 #mejo:-21 #memb:19 #mens:20 #ment:18 #mess:52 #mete:-20 #mewh:24 #mier:-17 #migh:-33
#migo:-14 #mijo:29 #mile:-36 #mili:-22 #mill:-32 #mind:-27 #mine:-17 #ming:-37 #misi:32 #mism:-20 #miss:-27 #modo:-14
#moni:40 #morn:-23 #most:-19 #moto:63 #move:-35 #movi:-14 #mpan:-29 #mpia:52 #mple:49 #mpra:29 #mpty:35 #mput:28
#much:-58 #must:-26 #nada:-18 #nadi:-21 #nado:20 #name:-55 #nana:15 #nanc:22 #navi:-14 #nced:25 #ncel:-43 #nces:-27
#ncom:19 #ncon:-28 #ndam:-21 #ndan:109 #ndar:-28 #nday:-28 #ndem:-33 #nden:101 #nder:-46 #ndim:-17 #ndin:-23 #ndow:94
#ndsh:18 #neac:48 #nece:-60 #nega:-24 #neit:-25 #neja:72 #nejo:-14 #nero:-16 #nesd:-15 #nest:-17 #neve:-19 #news:19
#next:-29 #ngan:-21 #nged:-20 #nges:14 #ngin:-34 #ngla:111 #ngle:79 #ngra:67 #ngun:-19 #nice:-16 #nido:14 #nigh:43
#ning:-52 #nino:42 #nion:14 #nish:-43 #nito:32 #nksg:-19 #nner:35 #nobo:-36 #nock:35 #nois:20 #noma:-34 #none:-25
#noon:-14 #nort:-47 #noth:-24 #noti:30 #nsen:-18 #nsid:14 #nsmi:26 #nsor:22 #nspe:25 #nsto:-19 #ntac:-16 #ntar:-15
#ntas:60 #nter:-38 #ntes:42 #ntia:16 #ntly:55 #ntme:-24 #ntos:17 #ntra:42 #ntre:17 #ntur:14 #nuev:-37 #numb:-41
#nume:-16 #nvoi:82 #nymo:42 #nyth:16 #oane:38 #obli:-24 #obod:-36 #obot:80 #obra:-57 #obri:51 #obvi:-20 #ocat:-78
#ocho:-14 #ocke:73 #ocki:-14 #ocup:34 #oday:-35 #odom:-17 #oesn:-18 #offe:39 #offi:79 #oger:-20 #oice:112 #oiga:31
#oing:-52 #oint:-37 #oise:20 #okin:-16 #olan:-16 #olar:19 #oldi:16 #olve:-14 #olvi:33 #omas:-35 #omat:96 #omeb:-15
#omen:-17 #omer:20 #omet:-35 #omew:24 #omin:-29 #ompl:-22 #ompr:71 #ompu:26 #once:-16 #onch:15 #onde:17 #ondi:25
#ondo:62 #oner:-20 #ones:-17 #ongr:67 #onit:34 #onjo:97 #only:-19 #onta:-22 #ontr:57 #ooki:-16 #oone:-24 #open:-111
#oper:-16 #ople:-15 #orar:-24 #orcy:34 #ords:19 #ored:20 #ores:47 #orev:-18 #orio:-28 #orki:18 #orma:-35 #orne:25
#orni:-25 #orra:24 #orre:-43 #orry:20 #orse:-24 #orte:-28 #orth:-51 #orti:60 #oses:32 #ospi:-17 #ossi:-18 #otal:-31
#otif:25 #otro:-19 #ound:-46 #ount:-27 #oure:-28 #ours:-36 #ousl:-22 #oved:42 #over:-85 #ovin:-14 #owed:26 #owli:-17
#pack:60 #pads:-15 #paga:22 #pago:21 #pain:19 #pala:14 #pano:20 #pape:47 #park:-39 #part:183 #pasa:-40 #pase:-14
#pass:28 #past:-22 #pcio:-18 #peak:-49 #peci:-48 #pect:15 #peda:-17 #pend:-18 #peop:-15 #pera:-24 #perf:-14 #perr:18
#pers:101 #perw:50 #pick:37 #pido:-16 #pier:-14 #pint:20 #piso:16 #pita:-19 #plac:-44 #plai:-23 #plan:-20 #plea:-31
#poin:-35 #pond:55 #pons:31 #posa:-27 #pped:-49 #ppin:-21 #ppoi:-26 #prac:32 #pran:22 #prec:-45 #pref:-23 #pren:32
#pres:22 #pric:-103 #prin:-23 #ptan:126 #ptio:-17 #puer:30 #pull:-19 #punt:-32 #pute:17 #quea:33 #qued:-27 #quem:-22
#quen:-21 #quic:-31 #quie:-49 #quin:40 #quit:-37 #quot:-26 #raba:52 #rack:23 #ract:30 #rade:-38 #radi:14 #rado:-27
#raff:37 #raig:-16 #rail:46 #rain:-53 #raja:16 #rake:-44 #rame:-58 #rand:42 #rano:-26 #rans:14 #rant:50 #rapi:-19
#rari:-25 #raro:-44 #rata:44 #rate:-16 #rath:-16 #rati:-47 #rato:-35 #ratu:51 #rave:-24 #rcar:-27 #rcol:-16 #rcyc:34
#rdad:-16 #rdon:28 #reac:-39 #read:20 #real:-91 #reas:-15 #reat:-17 #reca:-26 #recc:-21 #rece:26 #rect:-42 #reet:-28
#refi:-20 #rega:28 #regl:61 #remi:57 #rend:28 #renm:-18 #reno:-57 #rent:82 #repl:62 #rese:-32 #resp:81 #ress:-61
#rest:16 #resu:-28 #reve:-22 #revi:43 #revo:-30 #rgen:-21 #rger:19 #riba:-19 #ribe:-31 #ribi:-32 #ribl:-24 #ribo:78
#rice:-104 #righ:28 #rinc:-22 #ring:69 #rios:19 #riou:-32 #ripp:-33 #rite:14 #rive:-41 #rivi:88 #rjet:67 #rkin:34
#rlie:-30 #rmac:-21 #rmed:14 #rned:52 #rner:25 #rnes:-37 #rnig:-17 #rnin:-30 #robo:80 #rock:-17 #roll:-14 #rong:-59
#ront:-16 #room:74 #rose:31 #roug:15 #roun:-33 #rran:37 #rreg:46 #rren:44 #rrib:-26 #rros:71 #rson:17 #rted:-25
#rtes:44 #rtil:65 #ruck:-38 #rude:-17 #ruen:-16 #ruis:30 #runk:30 #rvic:21 #rwar:-17 #rwor:50 #sabe:76 #saca:-46
#sada:49 #safe:-14 #sage:81 #sala:130 #salu:-34 #same:-35 #saqu:-23 #sari:-15 #sary:-30 #says:-43 #sban:-19 #scab:-14
#sche:-32 #scou:-22 #scra:-18 #scri:14 #scue:-55 #sday:-29 #seas:-19 #seco:-23 #seda:-14 #segu:-50 #self:-23 #sell:94
#sema:-20 #semo:22 #send:41 #sera:15 #seri:-45 #sgiv:-19 #shie:17 #shop:-62 #sibl:-26 #side:-42 #sien:20 #sier:-18
#sign:-20 #sigo:-30 #sile:25 #sill:14 #sinc:-14 #sing:-22 #sion:-15 #sito:-17 #skin:-16 #slip:-21 #smis:26 #snow:63
#sold:-35 #soon:-32 #sorr:22 #soun:-15 #spac:-18 #spam:-26 #span:39 #spar:24 #spea:-49 #spec:-24 #sper:-16 #spit:-18
#spon:107 #spos:-33 #spot:-14 #spre:20 #spri:-19 #sque:29 #ssag:61 #ssed:-26 #sses:46 #ssib:-16 #ssin:-20 #ssio:-14
#stad:17 #stan:78 #star:-72 #stat:29 #stee:-28 #stem:-16 #stic:-22 #stil:16 #stim:-29 #stin:24 #stom:-14 #stop:-82
#stre:-35 #stri:-35 #stuf:-16 #stuv:15 #subs:-32 #suen:-22 #sume:-14 #sund:-21 #supp:26 #sure:17 #susc:-17 #tach:22
#tact:-16 #tado:27 #tail:41 #talk:43 #tall:-34 #tamb:71 #tant:-28 #tard:-25 #tarj:67 #tart:-35 #tati:34 #tech:-22
#tede:29 #teer:-28 #tele:-23 #tely:-21 #tema:-15 #temp:-35 #tena:-16 #tend:43 #teng:-24 #teni:27 #tent:-17 #tera:-35
#terd:-15 #tere:-17 #teri:18 #teve:-31 #text:-63 #than:-41 #that:-105 #them:-25 #then:-42 #ther:-28 #thes:-30
#they:-18 #thin:-46 #thir:-15 #this:-60 #thou:-17 #thro:58 #thum:-24 #thur:-19 #tica:18 #tice:36 #tico:40 #tido:80
#tiem:-25 #tien:40 #tifi:53 #till:66 #tima:-32 #time:-51 #tina:14 #ting:32 #tion:-35 #tira:-18 #tire:-26 #tive:-46
#tmen:-24 #tmrw:-15 #toda:-45 #todo:-30 #toma:97 #took:-23 #topa:-22 #torc:34 #tore:34 #tori:-32 #tort:65 #tory:27
#tota:-31 #trab:32 #trad:-24 #trae:23 #trai:26 #trar:-26 #tras:-15 #trat:49 #tree:-30 #tric:37 #trip:52 #truc:-44
#true:-16 #trun:31 #tten:14 #tter:-19 #ttin:-17 #ttle:45 #tual:51 #tues:-20 #tuff:-16 #tula:56 #tura:114 #turn:42
#twee:-14 #twic:-14 #twis:-19 #typi:22 #uall:51 #ualm:-16 #uant:17 #uard:35 #uare:-21 #ubre:18 #ubsc:-32 #ucho:-48
#udos:-23 #ueak:38 #ueda:-20 #uego:102 #uelo:15 #uelt:-18 #uelv:-17 #uena:-43 #uenm:-21 #ueno:15 #uent:-61 #uera:24
#uest:14 #uete:14 #ueva:-27 #ugar:-55 #ught:-24 #uick:-31 #uido:-14 #uier:-30 #uina:43 #uise:29 #ulat:56 #uldn:-20
#ulti:-16 #umar:17 #umbe:-41 #umbr:16 #umbs:-19 #umer:-21 #umpe:16 #unda:-26 #unde:-39 #unio:16 #unos:-18 #unst:-19
#unta:-31 #uote:-26 #upan:16 #uran:47 #urge:-22 #urne:52 #urre:56 #usad:63 #usan:69 #usba:-19 #uscr:-17 #used:43
#usly:-22 #usta:-24 #uste:27 #uter:17 #utom:97 #uttl:29 #uzon:31 #vaca:-31 #vaci:-19 #vece:-17 #vend:124 #veng:31
#vere:29 #veri:15 #vern:-17 #very:-25 #vete:-14 #vibr:-28 #vice:21 #vida:27 #vide:20 #vien:-24 #vier:-14 #view:14
#ving:24 #visa:55 #visi:-49 #viso:-26 #voic:112 #voke:-29 #vola:-15 #volv:-16 #vuel:-33 #wait:14 #walk:16 #ward:-21
#warr:35 #wedn:-15 #week:-45 #ween:-14 #weir:-17 #well:33 #went:-33 #were:-33 #when:-44 #wher:14 #whic:-26 #whil:23
#wice:-14 #wife:-39 #wifi:213 #wind:112 #wing:-14 #wipe:55 #wire:-20 #wist:-19 #wlin:-17 #word:64 #work:34 #worn:-25
#wors:-24 #woul:-19 #wron:-59 #xact:-29 #xpla:-14 #xtin:-33 #xtos:-23 #ycle:52 #yeah:-21 #yest:-15 #ymor:42 #yone:14
#your:28 #ypin:22 #yuda:-16 #ywhe:17 %again_later:-138 %again_later%agree:-18 %again_later%bad:-20
%again_later%busy:33 %again_later%car:-30 %again_later%car_part:36 %again_later%do_it:-27 %again_later%family:-42
%again_later%how_long:23 %again_later%lift:-59 %again_later%message:-18 %again_later%money:-25 %again_later%noise:39
%again_later%on_way:35 %again_later%pay_day:-60 %again_later%phone:45 %again_later%place:-26 %again_later%question:23
%again_later%refuse:-32 %again_later%season:-22 %again_later%staff:39 %again_later%start_again:81
%again_later%who:-15 %agree:-114 %agree%bring:47 %agree%busy:-19 %agree%call_off:81 %agree%car:67 %agree%car_part:26
%agree%family:20 %agree%gone_car:-18 %agree%how_long:47 %agree%leave_me:-16 %agree%lift:88 %agree%message:-32
%agree%money:94 %agree%noise:-43 %agree%pay_day:67 %agree%question:-65 %agree%shift_it:-27 %agree%staff:-16
%agree%thanks:-21 %agree%wrong_one:-19 %away:-50 %away%bring:-23 %away%call_off:-20 %away%car:33 %away%leave_me:-14
%away%lift:-15 %away%meaning:14 %away%message:28 %away%odometer:-17 %away%on_way:-20 %away%phone:41
%away%shift_it:-15 %away%staff:91 %bad:-205 %bad%car_part:-26 %bad%do_it:-35 %bad%family:-14 %bad%how_long:-17
%bad%lift:-18 %bad%machine:-18 %bad%staff:-49 %bring:-57 %bring%busy:-38 %bring%call_off:65 %bring%car_part:20
%bring%do_it:21 %bring%doubt:-14 %bring%elsewhere:48 %bring%family:70 %bring%how_long:-14 %bring%leak:-15
%bring%leave_me:-44 %bring%lift:15 %bring%message:-22 %bring%odometer:32 %bring%opening:32 %bring%phone:-16
%bring%question:-36 %bring%refuse:51 %bring%season:34 %bring%shift_it:78 %bring%staff:-27 %bring%who:33
%bring%wrong_one:21 %busy:-67 %busy%call_off:43 %busy%family:20 %busy%gone_car:14 %busy%odometer:-16 %busy%phone:47
%busy%question:58 %busy%shift_it:36 %busy%staff:18 %busy%who:22 %call_off:-43 %call_off%car:56 %call_off%do_it:-58
%call_off%elsewhere:17 %call_off%fails:53 %call_off%gone_car:-39 %call_off%lift:-20 %call_off%machine:24
%call_off%message:-15 %call_off%money:36 %call_off%noise:37 %call_off%odometer:98 %call_off%on_way:-57
%call_off%phone:58 %call_off%refuse:-36 %call_off%season:-14 %call_off%shift_it:14 %call_off%staff:-28
%call_off%start_again:-55 %call_off%thanks:47 %call_off%who:42 %call_off%wrong_one:-17 %car:-29 %car%car_part:-58
%car%do_it:28 %car%doubt:15 %car%fails:-14 %car%family:-56 %car%gone_car:-19 %car%message:20 %car%noise:-55
%car%odometer:29 %car%pay_day:-16 %car%phone:45 %car%place:29 %car%question:46 %car%refuse:-46 %car%season:-14
%car%shake:-17 %car%shift_it:-60 %car%staff:91 %car%wrong_one:17 %car_part:-58 %car_part%do_it:-33 %car_part%doubt:19
%car_part%elsewhere:-16 %car_part%fails:-85 %car_part%leak:-38 %car_part%leave_me:-15 %car_part%machine:-18
%car_part%money:-19 %car_part%noise:-40 %car_part%odometer:-41 %car_part%on_way:-44 %car_part%pay_day:57
%car_part%phone:78 %car_part%place:-31 %car_part%question:40 %car_part%season:46 %car_part%shake:-32
%car_part%shift_it:14 %car_part%smoke_smell:-32 %car_part%staff:39 %car_part%start_again:43 %car_part%who:20
%do_it:-83 %do_it%elsewhere:-32 %do_it%family:-56 %do_it%leak:-19 %do_it%leave_me:40 %do_it%lift:-15 %do_it%money:67
%do_it%odometer:-36 %do_it%on_way:36 %do_it%question:-52 %do_it%refuse:50 %do_it%season:50 %do_it%staff:69
%do_it%start_again:-16 %do_it%thanks:28 %do_it%who:18 %do_it%wrong_one:-30 %doubt:-54 %doubt%family:15 %doubt%lift:22
%doubt%odometer:-15 %doubt%pay_day:20 %doubt%phone:15 %doubt%staff:-19 %doubt%start_again:15 %doubt%wrong_one:-22
%elsewhere:-108 %elsewhere%family:-32 %elsewhere%money:37 %elsewhere%on_way:21 %elsewhere%phone:-15
%elsewhere%place:-29 %elsewhere%question:-32 %elsewhere%shift_it:-14 %elsewhere%staff:-30 %elsewhere%start_again:17
%elsewhere%who:41 %fails:-65 %fails%gone_car:33 %fails%money:14 %fails%odometer:-22 %fails%on_way:-17
%fails%question:48 %fails%refuse:14 %fails%who:29 %family:77 %family%lift:-19 %family%message:54 %family%money:21
%family%noise:-17 %family%on_way:-21 %family%phone:-34 %family%place:27 %family%question:89 %family%shift_it:79
%family%start_again:26 %family%who:-41 %gone_car:-62 %gone_car%message:-14 %gone_car%money:-27 %gone_car%question:41
%gone_car%refuse:51 %gone_car%season:-17 %gone_car%wrong_one:22 %how_long:-159 %how_long%lift:26 %how_long%message:20
%how_long%opening:-27 %how_long%phone:-16 %how_long%place:15 %how_long%question:24 %how_long%refuse:-21
%how_long%shift_it:-25 %how_long%staff:14 %how_long%start_again:30 %leak:-97 %leave_me:-87 %leave_me%lift:18
%leave_me%noise:18 %leave_me%odometer:-24 %leave_me%on_way:62 %leave_me%opening:35 %leave_me%phone:-16
%leave_me%question:29 %lift:88 %lift%on_way:-22 %lift%opening:25 %lift%question:-14 %lift%start_again:25 %machine:301
%machine%message:38 %machine%phone:-27 %machine%question:44 %machine%staff:24 %meaning:-130 %meaning%message:15
%meaning%money:14 %meaning%on_way:-19 %meaning%question:-34 %message%money:88 %message%phone:35 %message%place:16
%message%refuse:-36 %message%shift_it:39 %message%start_again:-95 %message%who:-26 %money:-151 %money%odometer:-14
%money%on_way:-65 %money%opening:15 %money%refuse:-27 %money%shift_it:-19 %money%staff:22 %money%who:69 %noise:-26
%noise%odometer:-29 %noise%question:-44 %noise%refuse:38 %noise%start_again:44 %odometer%on_way:47
%odometer%question:-27 %odometer%refuse:-21 %odometer%shift_it:-32 %odometer%staff:-30 %odometer%who:30
%odometer%wrong_one:-15 %on_way:-64 %on_way%opening:51 %on_way%place:45 %on_way%question:32 %on_way%refuse:-52
%on_way%shift_it:-31 %on_way%smoke_smell:-17 %on_way%wrong_one:-14 %opening:-238 %opening%phone:14
%opening%question:-42 %opening%staff:-36 %pay_day:-22 %pay_day%question:-19 %pay_day%season:-23 %phone:-110
%phone%refuse:25 %phone%shift_it:34 %phone%staff:-50 %phone%start_again:23 %phone%wrong_one:-60 %place:-145
%place%question:-27 %place%staff:-32 %place%start_again:-20 %question:-122 %question%refuse:-33 %question%season:18
%question%shift_it:-22 %question%staff:83 %question%start_again:56 %question%who:-46 %question%wrong_one:16
%refuse:-104 %refuse%season:14 %refuse%shift_it:99 %refuse%staff:-56 %refuse%thanks:23 %refuse%wrong_one:-38
%season:-28 %shake:-86 %shift_it:-95 %shift_it%staff:22 %smoke_smell:-88 %staff:26 %staff%who:52 %start_again:-119
%thanks:-143 %who:-62 %wrong_one:-144 @?:172 @after_visit:-44 @car:-73 @confirm:-51 @confirm_stop:15 @day:14 @day_:18
@later:-50 @nothing:20 @odometer:67 @offers:-37 @offers_:-28 @reading:-201 @time:17 @time_:-27 @times:-78
@walk_in:-51 @walk_in_will_do:-19 ^_$:33 ^_a:-19 ^_about:34 ^_abren:-16 ^_after:-31 ^_ahi:-14 ^_ahora:-20 ^_al:-20
^_all:-15 ^_already:-15 ^_am:27 ^_and:-65 ^_anda:-24 ^_ando:-27 ^_any:-39 ^_anything:-18 ^_aqui:-20 ^_are:109
^_at:-20 ^_ayuda:-33 ^_baja:14 ^_ballpark:-45 ^_been:-26 ^_bendiciones:-16 ^_buen:-20 ^_cant:-63 ^_car:-45 ^_como:43
^_con:-25 ^_congratulations:56 ^_cost:-26 ^_couldnt:-15 ^_cual:14 ^_cuanto:41 ^_cuantos:18 ^_de:-78 ^_dejeme:-31
^_did:138 ^_do:-46 ^_el:-70 ^_en:23 ^_eres:42 ^_es:-114 ^_ese:-20 ^_eso:-29 ^_esta:-76 ^_estan:58 ^_estoy:23
^_feliz:-27 ^_friday:41 ^_get:-39 ^_go:-33 ^_good:-36 ^_great:-17 ^_have:-27 ^_hay:-15 ^_hello:-64 ^_help:-35
^_hey:174 ^_hi:57 ^_hit:-15 ^_hm:117 ^_hmm:76 ^_how:-35 ^_i:-101 ^_id:-27 ^_ill:-56 ^_im:17 ^_info:-38 ^_is:146
^_it:-44 ^_la:-69 ^_las:-20 ^_last:-18 ^_let:-19 ^_lets:-16 ^_lo:-40 ^_lol:93 ^_los:38 ^_luego:-20 ^_mande:62 ^_me:18
^_might:-33 ^_muy:-17 ^_my:-66 ^_need:-24 ^_neither:-25 ^_ni:-44 ^_no:-14 ^_nobody:-28 ^_not:-54 ^_olvide:40 ^_on:-23
^_option:-20 ^_para:-52 ^_please:-25 ^_por:-41 ^_precio:-25 ^_prefiero:-20 ^_price:-25 ^_puedo:-83 ^_pues:18 ^_que:75
^_rain:-19 ^_revoke:-29 ^_saturday:42 ^_se:-14 ^_son:-22 ^_sorry:52 ^_steering:-22 ^_still:-47 ^_stop:-18 ^_su:136
^_sure:16 ^_take:-39 ^_tell:14 ^_thank:-15 ^_that:-23 ^_the:-33 ^_there:-66 ^_thurs:-18 ^_thursday:21 ^_tiene:-36
^_tienen:65 ^_tire:-22 ^_trabajan:64 ^_trae:-27 ^_un:-27 ^_voy:35 ^_we:-20 ^_wed:19 ^_were:-27 ^_what:24 ^_wheel:-16
^_where:-28 ^_who:-18 ^_why:-71 ^_will:-30 ^_ya:-25 ^_ye:-15 ^_yeah:-14 ^_yep:29 ^_yes:-32 ^_yo:-36 ^_you:-205
^_youre:-21 a:-30 a__book:16 a__can:56 a__casa:19 a__first:-16 a__for:-43 a__from:35 a__noise:-26 a__of:24 a__off:-15
a__on:-49 a__person:26 a__please:-15 a_bot:76 a_cruise:30 a_day:20 a_human:-44 a_mi:-14 a_person:19 a_real:25
a_robot:34 a_set:-17 a_shuttle:31 abajo:-24 abajo_$:-16 about_$:-19 about_the:49 ac:38 aceite:36 aceptan:118
actually:51 address:-43 address_$:-48 after:-20 after_$:17 after__drop:-16 after_i:-21 again:61 again_$:82
agendeme:-31 agua:-21 agua_$:-17 ahead:-19 ahi:76 ahi_$:89 ahora_$:28 ahorita:-19 aire:58 aire_$:43 al:-60
al_rato:-19 al_trabajo:-15 algo:-23 algun:-15 alignment:-15 alineacion:21 all:-74 all__my:-14 all_day:-14
all_over:-15 all_set:-29 almost:-18 already:-48 already_$:-19 also:50 am:43 am_$:-24 am__talking:31 am_i:17 amber:15
amor:22 an:-39 an_appointment:-19 and:-71 and__are:-64 and__is:-20 and__my:24 and__you:70 and_can:50 and_do:45
and_i:-19 and_is:19 and_the:-18 and_you:-63 anda:-41 ando:-33 anoche:21 anoche_$:28 antes:-21 antes_$:-17 any:-89
anymore:42 anymore_$:45 anything:16 anything_$:66 appointment:-21 apunteme:-20 aqui:18 aqui_$:33 aqui_no:-22 are:42
are_$:-67 are__a:87 are__closed:-15 are__guys:-46 are__on:-48 are__still:32 are_we:46 area:35 arm:-19 around:-23
arreglan:64 as:-46 as_i:32 as_well:-17 asap:-46 asi:-58 asi_$:-49 ask_me:14 asking:-16 at:-28 at_$:-19 at__you:32
at_all:75 at_and:-17 at_instead:-16 at_is:28 at_k:-21 at_or:-15 auto:68 away:17 away_$:-26 ayuda:-33 ayuda_$:-30
back_$:37 bajo:18 ballpark:-46 ballpark_$:-44 bank:14 bateria:-34 bateria_$:-26 be:15 be_the:21 be_there:-37
bearing:-15 been:-24 been_a:15 before_$:31 bendiciones:-24 bendiciones_$:-22 best:-24 best_$:-24 better:-21
better_$:-15 bici:44 bien:-32 bien_$:-35 bike:33 bit:14 bless:-17 blue:17 borrenme:-15 bot:84 bot_$:60 both:-24
brakes:-34 brand:57 brinca:-18 bring:131 bring__in:-17 bring_it:-20 bring_my:62 btw:31 buen:-29 bus_stop:22 but:-32
buy:23 buzon:31 by:-95 by_the:-43 cafe:16 call:-51 call_me:-17 call_my:-67 cambiar:-18 camion:15 can:138
can__bring:59 can__call:-15 can__check:72 can__come:-36 can__do:-88 can__make:-16 can__me:-19 can__pick:28
can__send:60 can__talk:-45 can__wait:-18 can_do:-24 can_my:162 can_someone:19 can_we:-37 can_you:98 cancel:-19
cant_do:-26 car_$:-45 car_is:-56 card:44 cards:33 cards_$:33 care:-21 care_of:-20 carro:-46 carro_$:22 carro__la:14
carro_prestado:15 carros:71 cars:36 cars_$:53 casa:47 cell:-17 celular:18 celular_$:21 cerca:29
change__appointment:35 change_my:20 changed:-16 changes:18 charge:-64 charge_$:-25 charge_for:-34 checar:30
check_$:-23 check_engine:-14 check_my:52 cheque:18 choco:24 cien:-14 cita:-70 cita_$:-31 click:60 close_$:-14
closed:-21 cobran:-51 cobran_por:-26 coffee:22 come__instead:-14 come_at:-17 como:21 como__de:-16 como__mi:17
como_lo:18 company:-19 compre:-17 comprends:52 comprends_pas:52 computer:17 con:-60 con_los:-18 con_mi:-32 con_un:-14
con_ustedes:-19 confirmed:15 confirmed_$:17 congratulations:56 corner:25 corner_$:17 cost:-44 cost_$:-32 could:42
could__be:58 could_i:14 couldnt:-18 covered:-22 creo:-14 cruise:30 cual_de:19 cuando_llegue:26 cuanto:14 cuanto__y:54
cuanto_sale:16 cuantos:17 cuesta_y:14 da:-22 dad:-14 dan:126 dar:-17 dash:-20 day:-83 day_$:-80 days:-19 de__este:15
de__para:15 de__que:16 de__textos:-15 de_fumar:17 de_la:28 de_llantas:63 de_persona:-15 de_que:-40 de_su:-22
de_todos:19 de_un:27 de_una:-30 dealer:-16 decir:-14 dejar:28 dejelo:-14 dejeme:-31 dejo:-16 del:15 del_carro:-24
del_jueves:15 descuento:-64 desde:19 despues:-21 dia:-88 dia_$:-44 dias:15 dias_$:23 did:165 did__get:23 did_i:69
did_it:-14 did_my:59 did_you:55 didnt:-14 digo:-28 digo_$:-16 dijo:43 direccion:-20 direccion_$:-17 dis:-17 dis_$:-17
discount:-21 do:86 do_$:-84 do__charge:-36 do__close:-30 do__contact:-16 do__do:52 do__get:-14 do__guys:86
do__have:92 do__keep:-30 do__know:-52 do__need:38 do__open:-57 do__sell:76 do__take:132 do__use:42 do__work:22
do_friday:-31 do_i:-25 do_instead:-17 do_it:-62 do_my:-31 do_not:-15 do_the:-28 do_they:-18 do_you:382 does:45
does_it:30 doesnt:-18 dog:57 domingo:-24 domingo_$:-18 donde:22 done:17 done_$:44 dont:-23 door:52 door_$:62 down:-41
down_$:-28 drive:-28 drive_$:-16 driving:88 driving_with:87 drop:102 drop__car:41 drop__off:45 drop_it:73 drop_me:-15
drop_the:22 due:-16 earlier:-29 early:-35 early_$:-45 eh:59 either:-14 el:15 el__la:-15 el__me:-17 el__se:-22
el__tienen:32 el__y:-25 el_aire:85 el_carro:-59 el_de:-24 el_dia:-17 el_domingo:-14 el_mismo:-30 el_motor:-15
el_precio:-14 el_viernes:-41 empty:35 en:-31 en__momento:20 en__tablero:16 en_dos:25 en_este:34 en_que:-14 end:-20
end_$:-15 engine:-27 entendi:38 era:57 eres:49 es:-83 es_$:61 es__del:14 es__y:32 es_de:-21 es_eso:-16 es_gratis:-38
es_grave:-20 es_un:-18 es_urgente:-20 es_usted:33 es_y:18 esa:-27 escribe:15 escribo:78 ese:-44 eso_$:-30 eso__lo:18
eso_me:19 eso_y:32 eso_ya:-14 espacio:-16 espanol:20 espera:63 esperar:-59 esperar_$:-41 esposa:-27 esposa_$:-18
esta:-37 esta_muy:-16 esta_tirando:-16 estamos:-24 estan:53 este:43 este__no:30 estimate:-19 esto:-18 esto_$:-17
estos:-21 estoy__el:-15 estoy_de:-30 estoy_en:-36 estoy_manejando:97 estuvo:15 ex:-15 exactly:-23 exactly_$:-17
explain:-14 factura:88 falta:21 favor:-31 favor_$:-28 feels:-24 feliz:-27 fell:45 feo:-16 fin:-31 find:-19 find_a:33
finish:-36 first:-26 first_$:-23 fix:20 fixed:-17 floor:27 for:-15 for_$:-46 for_me:22 for_my:-23 for_the:41
forever:-18 four:-45 free:-43 free_$:-35 frenos:-59 frenos_$:-54 friday_$:-44 friday_and:21 friday_at:-17 from:34
from__text:21 from_the:-17 from_your:-18 fue:22 fue_el:50 fuga:-25 full:18 fumar:17 game:96 gano:29 garantia:16
gente:19 get:-42 get__a:-50 get_a:29 get_me:-37 get_my:-22 give:-27 give_me:-20 go_ahead:-17 go_away:-16 going:-59
going_on:-39 going_to:-18 golf:14 gone:-28 gone_$:-18 good:-28 good__you:21 got:-36 gracias_$:-16 gratis:-41
gratis_$:-38 grave:-22 gustaria:-24 gusto:24 guy__the:15 guys_$:-33 guys_do:85 guys_open:-19 hablan:85 hablando:15
hablar_con:-28 hablo:-21 hablo_$:-18 hace:-20 hace_falta:30 hacen:112 had:-23 happy:-25 has:-25 have:-29 have__a:20
have__been:20 have__wrong:-26 have_a:54 have_loaners:30 have_my:-22 have_the:-33 have_to:-33 have_you:20 he:-26
hello:-64 help:-23 help_$:-33 her:-22 here:67 here_$:53 hey:174 hi:57 hijo:38 history:14 hit:-27 hitch:38 hm:117
hmm:76 home:58 horario:-24 hospital:-17 hospital_$:-16 hour:-18 hours:-18 how:-39 how__i:-23 how__is:29 how__time:-15
how__you:-49 how_do:-68 how_long:46 hoy:30 husband:-17 i__a:36 i__all:-28 i__an:-16 i__at:-17 i__have:-24 i__in:-22
i__it:-29 i__my:76 i__need:-21 i__off:29 i__that:25 i__there:-24 i__to:107 i__up:-14 i_am:46 i_bring:48 i_can:-51
i_cant:78 i_come:-42 i_do:-59 i_drive:-14 i_drop:39 i_know:-55 i_leave:47 i_mean:51 i_need:113 i_pay:18 i_speak:-32
i_take:-15 i_talk:-45 i_talking:31 i_use:18 iba:15 id:-34 id__to:-14 idea:45 if:-55 if_i:-15 igualmente:-16 ill:-74
ill_be:-15 ill_take:-23 im:-43 im__a:48 im__with:86 im_driving:91 im_good:-22 im_in:30 im_not:-18 in:-28 in_$:-28
in__waiting:30 in_a:84 in_my:-22 in_the:16 info:-54 info_$:-53 informacion:-18 informacion_$:-18 ingles:68 inside:15
into:48 into_the:53 invoice:82 invoice_$:85 is:63 is_$:56 is__a:29 is__about:-20 is__and:-23 is__car:107 is__do:17
is__free:-18 is__really:-24 is__the:123 is_a:-77 is_at:17 is_gone:-18 is_it:-68 is_making:-31 is_my:203 is_no:-17
is_on:64 is_the:67 is_there:81 is_this:-59 is_too:-26 is_your:14 it:-138 it_$:-52 it__and:20 it__for:27 it__me:33
it__of:16 it__under:-23 it_a:-21 it_again:91 it_be:14 it_in:-16 it_now:-23 it_off:38 it_the:18 jaja:58 jaja_$:44
jajaja:51 je:141 je__comprends:52 je_ne:96 job:-16 juego:63 just:-60 k_$:-24 keep:-23 keep__me:-16 keep_texting:-17
key:29 key_$:30 keys:-15 knock:44 know:-76 know_you:-58 la:-31 la__de:25 la__el:-20 la__en:29 la__es:41 la__las:16
la__se:-16 la_bici:34 la_casa:26 la_cita:-37 la_de:19 la_factura:88 la_llanta:-19 la_llave:15 la_luz:-17 la_puerta:15
la_sala:15 la_transmision:-18 labor:-29 labor_$:-21 las:-50 las_$:-16 las__que:16 las_llantas:-25 last_night:32
last_time:-16 late:-41 late_$:-15 later:34 later_$:45 le:-85 le__a:-27 le__una:24 leaking:-14 leave:34 leaving:-18
left:-16 les:-36 let:-33 let_me:-20 lets:-22 light:-51 light__on:-22 light_is:-25 like:-44 like_a:-19 line:-17
line_$:-15 list:-37 list_$:-32 lista:-14 little:23 live:-18 llamame:-15 llanta:-27 llantas:66 llantas_$:-34 llave:15
llegue:40 llegue_a:27 llevar:79 llevar__mi:29 llevar_a:27 llevarlo_$:-31 llevo_a:-15 lo:-188 lo__a:-32 lo__de:-17
lo__la:18 lo__mi:-23 lo__no:24 lo_vendi:-19 loaners:29 loaners_$:30 location:-72 location_$:-28 lol:94 lol_$:78
lol_no:32 long:33 long__the:17 long__you:20 long_is:34 look:14 los:-16 los_mensajes:-17 lost:-14 lost_my:-14 love:-15
luego:27 luego_$:69 lugar:-47 luz:-23 machine:32 mailing:-18 mailing_list:-16 making:-39 making_a:-24 mal:-36
mal_$:-23 mall:-18 man:-15 manana:-28 manda:-15 mandan:105 mandarme:-18 mande:54 manden:-30 manejando:39 manejo:-14
maquina:50 marca:47 martes:-19 mas:-31 mas_$:-25 mas_tarde:34 may:39 maybe:-16 mayo:-15 me:-160 me_$:-20 me__after:20
me__el:83 me__la:19 me__my:-16 me__the:16 me_a:-58 me_again:-31 me_from:18 me_fue:51 me_gustaria:-24 me_how:19
me_in:-17 me_off:-35 me_the:17 me_up:23 mean:33 mean_$:50 mean_on:15 mecanico:-20 mecanico_$:-26 meeting:54 mejor:-21
mensaje:82 mensaje_$:-21 mensajes:-71 mensajes_$:-50 mes:-21 message:104 message_$:55 message_me:-43 messages:-38
messages_$:-29 mi:24 mi_$:-21 mi__choco:24 mi__es:-14 mi__no:29 mi__y:-16 mi_carro:18 mi_cita:-22 mi_esposa:-26
mi_hijo:41 mi_numero:-14 might:-33 mijo:29 mil:-40 mil_millas:-15 mileage:-20 miles:-15 millas:-24 millas_$:-21
mis:29 mismo:-18 mismo_$:19 modo:-14 mom:84 momento:17 momento_no:15 monday:-15 monday_$:-19 more:-48 morning:-20
morning_$:-15 motor:-20 move:-22 much_$:-16 much_time:-15 mucho:-47 mucho_$:-18 must:-26 muy:-57 muy_mal:-18 my:48
my__are:-18 my__go:63 my__oil:32 my__says:-36 my__to:14 my__will:-22 my_arm:-19 my_car:40 my_cell:-16 my_husband:-16
my_number:-55 my_old:21 my_own:48 my_phone:33 my_son:33 my_spare:28 my_tire:-15 my_warranty:14 my_wife:-20 nada:-17
nadie:-21 name:-31 nao:90 navidad:-14 nd:-15 ne:96 ne__pas:96 ne_comprends:52 near:26 necesario:-14 need:14
need_$:-15 need__bring:94 need__change:44 need_a:-14 need_that:-37 need_to:115 neither:-25 new_year:16 news:19
next:-29 ni:-79 ni_modo:-14 nice:-15 night:67 night_$:39 nino:16 ninos:25 ninos_$:32 no_$:-69 no__at:76 no__but:14
no__de:19 no__falta:16 no__here:-34 no__you:36 no_esta:15 no_estoy:31 no_gracias:15 no_hace:16 no_hay:-15 no_idea:77
no_manden:-19 no_more:-20 no_noise:77 no_puedo:25 no_thanks:27 no_voy:-15 nobody:-36 noise:22 noise_$:-36
noise__all:77 noise_at:77 nomas:-34 non:43 north:-47 not:-34 not__me:-44 not_be:57 not_contact:-16 notifications:18
now:-58 now_$:-36 nuevas:-18 nuevas_$:-18 number:-40 number_$:-46 number_from:-16 number_is:20 numero:-35
numero_$:-17 ocho:-14 ocupo:26 of_me:15 of_my:46 off:20 off_my:30 off_the:43 off_your:-26 office:79 office_$:25 oi:49
oiga:20 oil:78 oil_$:34 oil_changes:19 ok_$:27 ok_is:17 ok_you:-18 olvide:40 on:-24 on_$:-27 on__th:63 on__the:50
on_it:16 on_my:-45 one:-21 one_$:-28 only:-19 open:-107 open_$:-20 opt:-14 or_$:-18 otro:-19 our:18 out:15 out_$:-33
out__the:54 out_of:52 over:-36 over_my:-14 overnight:-17 own:45 own_oil:32 oye:86 pads:-15 pagar:34 pague:14 paint:19
paperwork:50 paperwork_$:50 para__es:16 para_cuando:-31 para_el:-27 para_la:19 para_los:17 parking:16 parte:-17
partes:66 partes_$:67 parts:33 pas:110 pasa:-20 pass_$:-22 past:-21 past_$:-14 pay:16 pedal:-16 people:-15 perdon:22
perdon_$:17 pero_no:24 person_$:-27 phone_$:26 pick:23 pick__up:27 pickup:-17 piso:17 please:-34 please_$:-48
please__is:16 pm_$:-19 por:-85 por_favor:-24 por_que:-17 por_una:-14 possible:-15 precio:-44 precio_$:-30
prefiero:-20 pregunteme:18 prestado:15 price:-100 price_$:-26 puede:18 puede_$:-27 puedo__a:28 puedo__la:-19
puedo_llegar:14 puedo_llevar:59 puerta:15 pues_$:-22 put:22 put_on:42 que:17 que_$:210 que__de:43 que__eso:-18
que__le:-17 que__trabajo:15 que__un:-15 que_el:19 que_es:-39 que_tan:-19 que_tiene:-30 que_ya:15 quick:-31
quien__el:15 quienes:-23 quienes_son:-23 quieren:-21 quote:-25 quote_$:-16 radio:23 rain:-19 rapido:-15 rather:-16
rato:-28 read:31 ready:25 ready_$:36 real_person:19 really:-96 rechinan:-17 recibo:66 red:17 remember:19 remove:-15
replaced:-28 reply:76 report:37 respondo:63 restart:-23 revisar:-21 revoke:-29 revoke_$:-25 right:55 right_now:67
ring:-55 ring_me:-45 robot:89 robot_$:80 rock:-17 room:34 room_$:56 rough:-23 rude:-17 sabado_$:-28 sabe:28 saben:56
sala:83 sali:22 same:-34 same_day:-49 saturday:29 saturdays:-17 saturdays_$:-17 say_$:23 says:-43 schedule:-28
schedule_$:-18 se:-70 se__de:21 se__fue:51 se_lo:-24 se_me:41 se_puede:15 second:-23 second_$:-14 sedan:-14 see:31
see__then:-18 see_you:22 sell:82 semana:-17 send:45 send__the:19 sera:15 serious:-14 service:23 set:-56 set_$:-17
set_of:-17 she:-16 shop:-55 shop_$:-18 shop_is:-18 shut:-20 shuttle:29 shuttle_$:36 si:-32 si_$:-20 si__jueves:14
si_el:22 si_lo:-25 si_me:15 si_pero:-28 si_puedo:34 side:-55 side_$:-45 siento:23 sigo:-30 siguen:-14 since:-14
snow:64 so:-41 sold:-39 sold_$:-16 somebody:-15 someone__me:18 somewhere:24 son:-43 son_$:-33 sorry:22 sorry_$:-16
sorry_i:81 soy:-22 spare:28 speak:-47 speak_to:-25 speak_with:-22 spring:-19 squeaking:47 st:-24 st_$:-47 station:32
steering:-27 still:17 still_good:28 stop:-33 stop_$:-19 street:-28 street_$:-23 stuff:-16 su:134 suena:-22 sunday:-16
sure__you:22 t:-31 tablero_$:15 take:34 take__off:-46 take_me:-30 take_my:-26 taken:-17 taken__of:-17 taken_care:-17
talk:17 talk__a:-50 talk_to:-63 talking:27 talking_to:31 taller:-27 tambien:71 tambien_$:44 tan:-23 tanto:-20 tap:20
tarde:19 tarde_$:36 tarjeta:67 tax:-20 te:75 te__luego:76 tech:-44 tell_me:-16 temprano:-15 ten:-20 terrible:-23
text:32 texting:-31 texting_me:-21 textos:-23 textos_$:-20 texts:-32 texts_$:-19 th_$:30 than:-27 thank:-35
thank_you:-35 thanks:24 thanks_but:14 thanksgiving:-19 thanksgiving_$:-19 that:-104 that_$:-40 that_is:-30
that_the:19 the:-17 the_$:39 the__and:19 the__at:-16 the__before:31 the__do:17 the__for:-25 the__in:-31 the__is:-20
the__last:41 the__off:39 the__on:38 the__person:-14 the__please:16 the__side:-46 the__with:15 the__year:16
the_address:-27 the_best:-23 the_door:62 the_guy:16 the_kids:-17 the_mall:-18 the_messages:-27 the_new:16
the_office:44 the_old:-15 the_pm:15 the_same:20 the_shop:-14 the_tech:-15 the_th:31 the_truck:-20 the_trunk:31
the_waiting:49 the_wrong:-36 them:-25 them_$:-15 then:-42 then_$:-28 there:24 there_$:52 there__a:-38 there__no:-17
there_is:-76 these:-30 these_messages:-17 they:-17 thing:-26 thing_$:-15 things:14 think:-16 this:-60 this__the:-20
this_a:79 this_about:-19 this_is:-29 through:42 through_$:61 thurs:-29 thursday_$:-31 tiempo:-18 tiene:-85
tiene_$:-18 tienen:138 tienen_$:-24 tienen__de:93 tienen__el:-39 till:-15 time:-33 time_$:-58 time__it:94
time__you:-59 time_do:-58 tio:34 tirando:-22 tire:-37 tire_$:-15 tire_is:-16 tires:17 tires_$:-34 tmrw:-15 to:-38
to_$:-16 to__a:-22 to__in:35 to__it:-31 to__out:14 to__the:22 to__this:-20 to__to:-15 to_a:-29 to_bring:93
to_change:42 to_check:-18 to_come:16 to_do:-41 to_drive:-26 to_make:18 to_me:15 to_my:-29 to_the:-23 today:-35
today_$:-33 todo:-40 todo_bien:14 tomorrow_$:-18 too:27 too_$:78 too__for:-15 too_early:-27 took:-23 tortillas:65
total:-16 tow:67 tow_hitch:38 trabajan:53 trabajando:-26 traded:-18 trae_$:19 traigo:-15 trailer:27 transmision:-23
trip:81 truck:-38 truena:-16 trunk:31 tu:20 turned:59 twice:-14 two:-20 typing:22 un:14 un__que:16 un_carro:-18
una:16 una__de:21 under:-35 unos:-18 up:-89 up_$:-38 urgent_$:-27 urgente:-23 us:-22 use:65 used:43 ustedes:29
ustedes_$:-55 vacaciones:-28 vacation:-18 veces:-17 venden:135 vendi:-32 vendimos:-17 veo:14 ver_si:17 verdad_$:25
vida:25 viene:-21 viernes:-37 viernes_$:-38 voice:31 voy_a:-18 vuelta:-15 wait:-29 waiting:44 waiting_room:39
warranty:35 was:14 was__again:95 was__the:19 was_it:93 was_the:-20 way:-21 we_do:-27 wed:18 week:-23 week_$:-31
week_from:19 weird:-17 well:33 well_$:33 went:-33 were:-33 what_$:62 what__a:-16 what__are:-20 what__do:-45
what__is:30 what__this:-20 what__you:-106 what_are:-18 what_company:-16 what_did:-59 what_do:-41 what_is:-34
what_time:118 what_was:-19 wheel:-25 wheel_bearing:-15 when:-33 when__i:16 when__you:-31 when_do:-31 where:-20
where__you:-37 where_are:-36 where_is:16 which:-21 which__is:15 which_shop:-14 while:23 who__this:-29 who__you:-38
who_are:-37 who_dis:-17 who_is:-21 why:-74 why_$:-29 why__you:-54 why_do:-54 wife:-33 wife__it:39 wife_says:-22
wifi:213 wifi_$:125 will__be:17 will__it:-43 will__there:-22 will_be:18 will_do:-24 will_it:16 window:81 windows_$:20
wipers:64 wires:-19 with_me:18 with_my:-20 with_the:-25 with_you:-15 won:90 work:-34 work_$:-22 work_on:33 working:18
worn:-25 worse:-20 would:-17 wrong:-59 wrong_person:-21 y_$:-25 y__ahi:-14 y__es:-22 y__que:28 y_el:-16 y_eso:39
y_por:17 ya:-78 ya_$:-27 ya__a:19 ya__el:14 ya__mi:69 ya_esta:44 ya_lo:-23 ya_tiene:-14 yeah:-21 yep:28 yep__you:22
yes:-25 yes_$:-36 yes__at:14 yes__it:-22 yes__you:62 yes_and:27 yes_do:62 yes_i:-24 yesterday:-15 yo:-55 yo_ni:-14
you:73 you_$:-96 you__a:158 you__and:38 you__anything:-18 you__bot:47 you__do:84 you__for:-21 you__have:-35
you__is:14 you__it:-30 you__me:-39 you__my:-19 you__on:66 you__open:-20 you__that:-27 you__the:20 you__today:-27
you__what:-20 you_a:100 you_are:-58 you_call:-72 you_can:-33 you_charge:-36 you_check:83 you_close:-32 you_closed:-15
you_have:83 you_keep:-30 you_need:-39 you_on:-52 you_open:-80 you_pick:27 you_put:38 you_sell:89 you_send:60
you_shut:-18 you_still:-23 you_take:103 you_tell:-16 you_text:38 you_then:-19 you_there:66 you_work:22 your:69
your__is:75 your__list:-18 your__on:14 your_mailing:-16 your_message:30 your_records:-16 your_shop:-15 youre:-28
"""
