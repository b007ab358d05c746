"""What speaks for and against `unclear`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "unclear"
BIAS = -31
WEIGHTS = """\
#aben:148 #aber:-93 #abie:53 #able:-101 #abra:-62 #abri:71 #abue:71 #abus:-56 #acab:-80 #acci:75 #aced:-101 #acei:50
#acen:128 #ache:77 #achi:50 #acks:100 #actu:60 #adas:-50 #aded:68 #adie:-54 #adit:-52 #ador:160 #aero:53 #afec:53
#agal:-51 #agam:-56 #agar:106 #ages:-72 #agno:-56 #agos:67 #agua:-115 #ague:95 #aiga:59 #aigo:-110 #aila:61 #aile:73
#ails:-70 #airs:78 #aiti:55 #ajaj:60 #ajes:-53 #ajit:-65 #akes:-52 #alam:59 #aldo:106 #aler:-56 #algo:-97 #alia:130
#alie:-67 #alla:-75 #alle:-89 #allp:-58 #almo:-64 #alor:77 #alre:-69 #also:79 #alwa:-55 #amad:-62 #amal:79 #aman:-59
#amat:97 #amen:-61 #amil:-57 #amor:80 #amos:-70 #anan:131 #ance:-70 #anci:121 #andl:53 #andm:-70 #ando:-93 #andp:50
#ands:-86 #anec:-58 #anej:81 #ange:-74 #angi:115 #angu:-54 #anme:-53 #anne:-104 #anol:61 #anos:85 #anti:125 #anyb:52
#anyo:184 #apag:-85 #apar:-135 #aper:-69 #apet:73 #apin:57 #apun:-54 #aran:89 #arar:-61 #aras:85 #arca:-52 #arda:56
#ardo:-65 #ards:90 #area:57 #aren:-51 #argo:-50 #aria:-77 #ario:51 #arke:-81 #arks:79 #arla:-54 #arle:84 #arli:-53
#arly:-61 #arma:53 #arme:-163 #arne:-56 #aron:-107 #arqu:-59 #arri:105 #arro:56 #arse:71 #arta:93 #arti:77 #asap:-56
#asdf:283 #asdk:152 #aseg:101 #ases:119 #asia:-58 #ason:-56 #asta:-95 #atal:-53 #atan:154 #atch:-53 #aten:87 #atic:79
#atio:55 #ativ:-62 #ator:-97 #atra:-104 #ause:-64 #auto:151 #avan:74 #aven:-63 #avia:67 #ayar:62 #ayer:-68 #ayin:54
#ayme:91 #babe:131 #bano:132 #befo:-53 #belt:-56 #bend:-63 #bici:77 #bido:-98 #bien:101 #bike:134 #bill:-70 #birm:-51
#blac:-54 #blam:-53 #blan:102 #bles:-58 #blow:-68 #boat:112 #body:-123 #bonj:90 #book:-74 #bota:-51 #brar:53 #brig:70
#brin:177 #bris:87 #buel:71 #busc:69 #bvio:-73 #cade:103 #cado:77 #cafe:112 #call:-145 #calo:77 #camb:-83 #came:-101
#camp:-54 #cans:-74 #cant:88 #canz:-75 #capa:84 #card:68 #carl:55 #carn:-65 #caro:-64 #cart:77 #casa:149 #cash:111
#cast:-68 #cati:-61 #caus:-64 #cayo:-53 #ccid:54 #ceip:67 #ceit:50 #cell:-84 #celu:67 #cent:-80 #cerc:66 #ceri:87
#cert:78 #cess:82 #chai:122 #chat:82 #chea:-119 #chem:-54 #cher:122 #ches:72 #chis:83 #chni:66 #cian:70 #cibe:50
#cibo:144 #cing:-61 #cipi:-51 #cirl:73 #cita:-59 #cked:141 #cket:68 #ckup:-73 #clos:-60 #cobr:-60 #code:63 #coge:-51
#coja:50 #coll:-63 #colo:-53 #coma:127 #comp:60 #cond:55 #cong:58 #cono:90 #cord:-52 #corn:91 #cosa:69 #cost:-94
#coup:-74 #cove:-96 #crac:55 #crap:-54 #cred:61 #crew:-70 #crib:-52 #ctic:53 #ctio:-56 #ctiv:-87 #ctri:65 #ctur:87
#cual:-73 #cuar:-53 #cubr:71 #cupa:70 #cupe:-51 #cupo:64 #curr:83 #cust:-58 #cycl:63 #davi:67 #days:-129 #deal:-100
#deci:-85 #dedo:216 #deep:-63 #deje:-56 #dela:-56 #dele:-127 #deli:87 #deme:-72 #depo:170 #dere:75 #ders:-54
#desc:-152 #dese:-80 #deta:68 #diag:-56 #dias:-64 #dice:-76 #didn:-70 #dier:-51 #dies:86 #digo:80 #dijo:68 #dimo:-57
#dine:60 #dinn:115 #dire:-76 #disp:63 #dist:110 #dogs:129 #doke:-62 #dond:63 #dont:-93 #dora:95 #dosc:-53 #down:-65
#drai:-53 #dran:58 #dres:-142 #drio:91 #drop:101 #dura:55 #duri:-55 #eady:-60 #eage:-82 #eagu:88 #eall:-104 #eand:-55
#eape:-112 #eard:77 #earl:-113 #earm:-67 #earn:95 #ears:-84 #ease:-67 #easo:-56 #eate:77 #eath:77 #eats:93 #ecen:110
#eces:-71 #eche:97 #echn:66 #ecia:-154 #ecib:147 #ecid:-81 #ecin:56 #ecio:-127 #ecog:-54 #ecoj:68 #econ:-50 #ectr:65
#edal:-62 #edar:57 #eddi:72 #edia:-58 #edid:51 #edir:-83 #edit:102 #eeds:50 #eeli:61 #eels:-64 #eena:53 #eepi:-59
#eeti:78 #efor:-53 #egal:53 #egla:79 #egro:-52 #egui:-67 #egur:112 #eing:-75 #eipt:67 #eite:50 #eith:-71 #ejan:129
#ejas:59 #elan:-59 #elec:87 #eler:54 #elim:-72 #eliv:113 #eliz:-51 #ello:-129 #else:-72 #elul:67 #emai:150 #emen:-93
#emio:91 #empr:-113 #empt:82 #enag:53 #enca:78 #ench:81 #enci:-82 #enco:-55 #encu:94 #ende:145 #endo:79 #enem:66
#enen:153 #enga:67 #engl:54 #enin:-71 #enme:-135 #enta:55 #enti:-136 #entl:60 #entr:-53 #ents:79 #epai:87 #ephe:65
#epin:-59 #eply:83 #epos:154 #epta:119 #eque:-56 #equi:-68 #erad:-63 #eran:-77 #erar:-83 #erat:-56 #erco:65 #erda:-67
#erdi:-61 #erem:74 #eren:-99 #eres:-71 #eria:63 #erio:-77 #erle:72 #erlo:-72 #eros:110 #erre:57 #erst:186 #erte:-66
#erti:113 #erto:74 #erwo:50 #esas:-55 #escr:92 #escu:-93 #esel:75 #esen:-62 #eser:-64 #esnt:-55 #espe:-70 #espo:51
#esta:51 #estr:-64 #etai:60 #eter:-148 #ethe:102 #etos:-69 #evar:85 #even:-132 #ever:-148 #evie:62 #exam:113
#expl:-62 #exto:-60 #fact:89 #fami:-57 #fect:-91 #fell:51 #ffle:64 #fice:64 #fila:60 #fill:55 #firm:-57 #firs:-93
#flee:59 #flie:114 #floj:-56 #floo:55 #flor:51 #fona:-53 #fore:-57 #forg:-55 #form:55 #foto:184 #four:-64 #fren:-164
#frij:173 #fuma:57 #furi:-80 #gado:111 #gala:65 #gall:-58 #gana:62 #gand:-50 #gano:100 #gara:76 #gato:111 #genc:83
#gend:-84 #gers:60 #gets:-69 #ghed:61 #ghts:-64 #ghty:-59 #gift:72 #gine:-51 #girl:92 #glan:84 #glas:59 #gles:129
#glis:60 #gnos:-56 #goin:-53 #grab:112 #grad:-77 #gros:-70 #grua:167 #gual:-53 #guar:145 #guen:50 #guer:77 #guir:-67
#gura:101 #hace:110 #hago:-77 #haha:131 #hair:103 #half:102 #hank:-61 #heap:-116 #heco:-59 #hell:-84 #heme:-54
#here:108 #hese:-55 #hiel:72 #high:-50 #hill:-63 #hink:-75 #hiri:107 #hitc:112 #hnic:66 #hold:-53 #hole:-87 #homb:-53
#home:69 #hora:-88 #hosp:-50 #hoto:121 #http:188 #hurs:-88 #husb:-53 #hutt:52 #iagn:-56 #iaro:-51 #iben:72 #ible:-117
#icen:-52 #icku:-52 #icle:-50 #icos:51 #idea:55 #ider:105 #ides:59 #idge:-61 #idnt:-70 #idri:91 #ieja:63 #ield:52
#ienc:-53 #ierd:-83 #iero:-102 #ierr:-69 #iese:90 #iete:-57 #ieve:58 #ieza:58 #ifor:56 #igad:71 #ight:-65 #igle:-50
#igua:-100 #ilea:-75 #illa:93 #illi:52 #imad:-58 #imag:173 #imes:-56 #imin:-79 #imit:79 #inch:63 #inde:-59 #indi:71
#ines:100 #info:-64 #ingl:70 #ingo:-86 #ingu:-51 #inic:-84 #inne:115 #insp:93 #inst:61 #ione:112 #ions:92 #iosi:-59
#ious:-58 #ippe:-79 #irec:-74 #irin:108 #irma:-51 #irst:-93 #irve:72 #isan:88 #isar:-51 #isca:50 #isco:57 #isen:52
#isit:-59 #ista:-55 #istr:68 #itad:50 #itch:70 #ited:80 #iten:-53 #ithe:-88 #itor:86 #itos:-69 #itte:126 #ized:86
#izza:73 #jado:72 #jaja:134 #jala:-107 #jalo:-108 #jeje:141 #jenl:-52 #jito:-58 #jobs:56 #jueg:172 #just:-85 #knoc:78
#lack:-78 #lada:-80 #lado:-61 #lady:59 #lamb:-71 #land:77 #last:-65 #laug:70 #lava:104 #lave:90 #lcan:-75 #ldin:62
#lean:112 #lect:87 #leet:59 #lege:-62 #legi:-80 #lego:58 #lenc:73 #lers:80 #lesi:-50 #less:-120 #lete:-65 #leva:53
#levo:-54 #lien:-92 #lies:57 #ligh:-51 #like:-132 #link:88 #liqu:-79 #lish:60 #list:-56 #llam:-68 #llan:71 #llav:90
#lled:-81 #llen:-96 #llpa:-58 #lmos:-55 #loco:56 #loor:74 #lord:58 #lose:-52 #love:147 #lowe:78 #lpar:-58 #lrea:-69
#ltur:70 #lula:67 #lway:-55 #mada:-71 #madr:75 #mage:152 #mail:120 #maki:-56 #mall:85 #mama:91 #mana:-95 #mand:121
#mann:-74 #mano:-69 #mara:61 #mari:-62 #mark:-106 #marm:-71 #mart:-71 #masi:-58 #mati:73 #matt:76 #mayo:-50 #mbie:52
#mbra:50 #medi:-74 #meet:118 #melt:-69 #memb:89 #memo:55 #ment:57 #merc:70 #meri:54 #mier:-75 #migo:-66 #mile:-88
#mili:-77 #milk:73 #mill:-73 #mind:-69 #mira:75 #misi:62 #miss:-60 #mite:79 #moni:67 #more:-70 #mosl:-88 #moth:-66
#moto:126 #move:-94 #movi:55 #mowe:101 #mpan:-92 #mpar:162 #mpra:60 #mpre:-55 #mpro:-58 #mpty:98 #mput:58 #much:-81
#must:-57 #nada:-67 #nadi:-54 #nail:-57 #name:-90 #nast:67 #nazo:-53 #ncan:110 #nced:65 #ncel:-96 #ncio:68 #ncom:109
#ncon:-92 #ncue:94 #ndal:96 #ndan:117 #nded:-66 #nden:95 #ndie:56 #ndim:-57 #ndin:-83 #ndma:-70 #ndos:-67 #ndow:101
#ndra:56 #ndre:-59 #ndri:-51 #nece:-66 #neja:111 #nemo:51 #nera:-76 #ners:77 #neve:-60 #ngan:-57 #ngla:89 #ngle:70
#ngli:59 #ngra:51 #niev:61 #nigh:54 #nine:-75 #ning:-88 #nion:146 #nish:-196 #njou:90 #nnin:52 #nobo:-70 #nock:78
#nois:51 #noma:-59 #none:-70 #noon:-68 #nost:-54 #noth:-69 #nove:-56 #nsan:-60 #nsig:57 #nsor:67 #nspe:93 #nsta:65
#ntad:-106 #ntas:130 #nten:-62 #ntes:92 #ntia:90 #ntie:-58 #ntil:62 #ntly:60 #ntra:117 #nuev:-127 #nunc:-62 #nven:-54
#nybo:52 #obod:-70 #obot:54 #obre:-89 #obri:55 #obvi:-73 #ocar:70 #ocas:-68 #ocat:-89 #octo:-69 #odav:67 #oday:-68
#odri:70 #oesn:-55 #offe:87 #offi:64 #oger:-85 #oice:86 #oint:-52 #oise:51 #okin:-66 #olad:-58 #oles:96 #ollo:-56
#olor:-72 #omad:131 #oman:52 #omas:-59 #omat:64 #ombe:-68 #ombr:97 #omen:-126 #omer:111 #omew:50 #ompl:-59 #ompr:67
#ompu:59 #onal:80 #onaz:-53 #once:-72 #onde:173 #ondo:115 #onea:-60 #onen:185 #ones:-73 #onga:-50 #ongr:51 #onjo:64
#only:-65 #onoc:105 #ontr:112 #oost:131 #opco:65 #open:-133 #ords:117 #ores:124 #orio:-59 #orki:62 #orma:-110
#orme:136 #orqu:57 #orra:118 #orre:-122 #orse:-76 #orta:62 #osci:-53 #oser:-86 #osit:111 #ospi:-50 #ospo:-74 #oste:57
#osti:-54 #osto:-60 #othe:-51 #otor:81 #ouch:101 #ough:-52 #oung:126 #oupo:-50 #oure:-100 #ousa:-52 #oved:121
#over:-132 #ovie:67 #owed:57 #ower:100 #owli:-53 #pack:96 #pads:-54 #paga:69 #pain:61 #pair:68 #pana:-59 #pano:61
#pany:118 #pape:82 #part:162 #paym:91 #pcor:65 #peak:-75 #peci:-145 #peda:-62 #pedi:70 #pena:-60 #perd:-72 #perr:91
#pers:119 #perw:50 #peso:142 #phot:121 #pice:67 #pick:112 #pien:-52 #pier:-87 #piez:58 #pint:52 #pisc:90 #pizz:73
#plan:-97 #podr:66 #pond:125 #pone:89 #pong:-67 #ponl:-83 #popc:65 #porq:110 #posi:131 #posp:-74 #pped:-87 #prac:53
#pref:-64 #prem:91 #pren:-52 #pric:-181 #prin:-63 #prom:-51 #prop:62 #ptan:218 #pued:57 #puer:135 #pull:-76 #punt:-69
#quea:62 #qued:-50 #ques:88 #quic:-56 #quit:-113 #quot:-73 #raba:87 #radu:-60 #raff:58 #rail:117 #rain:-70 #raja:83
#rame:-205 #rand:64 #rant:122 #rapi:-52 #rapy:-57 #raro:-79 #rata:57 #rate:-80 #rath:-53 #rati:-52 #raya:57 #rcar:-61
#rdan:90 #rden:-61 #reac:-63 #real:-113 #rece:72 #reci:-74 #reen:-57 #reet:68 #refr:50 #regl:56 #rela:-56 #rend:-94
#rene:-72 #reno:-51 #rent:137 #repa:79 #repl:63 #repr:-62 #reso:-68 #resp:78 #ress:-88 #rest:89 #rger:143 #ribl:-74
#ribo:62 #rica:105 #rice:-144 #rida:-56 #ridg:-61 #ried:-75 #rifa:62 #riga:70 #ring:72 #rios:86 #riou:-50 #ripp:-77
#rivi:72 #rkin:111 #rlie:-53 #rman:66 #robo:54 #rona:60 #ropi:87 #roun:-65 #rran:60 #rren:64 #rrit:100 #rros:138
#rted:-92 #rtes:103 #rtid:90 #rtil:139 #rtin:-90 #ruck:-63 #runk:77 #runn:54 #ruts:-65 #rvic:58 #rwor:50 #sabe:74
#sabr:103 #saca:-75 #sage:101 #sala:161 #salg:-78 #same:-65 #sant:-50 #sarm:57 #save:-62 #says:-128 #sban:-53
#scab:67 #scie:-56 #scue:-81 #sdkj:152 #seat:145 #sell:102 #send:76 #senl:55 #sera:58 #seri:-127 #serv:-79 #shie:54
#shut:-60 #siad:-58 #sibl:-50 #sica:183 #sies:50 #siet:-50 #sigo:-96 #sill:82 #sing:-61 #sirv:62 #site:-59 #sitt:-54
#size:86 #sket:96 #slow:-50 #snow:128 #some:-56 #sona:58 #soon:-86 #spac:-83 #spam:-91 #span:98 #spea:-75 #spec:-52
#spon:110 #spre:78 #spri:-55 #ssag:54 #ssed:-65 #stal:101 #star:-102 #ster:57 #stic:-81 #stim:-111 #stin:59 #stio:62
#stom:-58 #stop:-72 #stos:56 #stre:-78 #stri:-67 #stro:79 #stru:-78 #summ:-54 #sung:59 #supp:56 #susc:-61 #taba:-59
#taci:-53 #tada:-89 #tail:117 #tala:63 #talk:56 #tama:92 #tamb:100 #tame:-56 #tank:50 #tant:-71 #tape:73 #tard:-127
#tate:-50 #teac:51 #tede:79 #tela:61 #temp:-123 #tena:-61 #tend:142 #tene:77 #teni:66 #tent:-105 #tera:-103 #teri:61
#term:-55 #ters:60 #text:-73 #than:-108 #that:-75 #then:-50 #thes:-55 #thin:-63 #thou:-52 #thre:-60 #thum:-55
#tice:59 #tick:-90 #tifi:116 #till:109 #tima:-89 #time:-94 #ting:-83 #tipo:-66 #tito:62 #tive:-94 #toca:79 #toda:-79
#todo:-68 #told:-50 #toma:77 #tono:61 #topa:-52 #tops:-52 #tore:133 #tort:171 #traf:-58 #trai:74 #tran:-71 #trat:51
#tren:-88 #tric:65 #trip:138 #trol:62 #truc:-83 #true:-52 #trun:77 #trut:-65 #tter:-62 #tura:146 #turb:157 #ture:92
#twis:-62 #typi:114 #uali:51 #uall:54 #uard:122 #uary:-66 #ubre:57 #uche:73 #ucho:-61 #udan:126 #udar:-65 #ueak:69
#uego:117 #uela:72 #uelo:53 #uema:59 #uena:-55 #ueno:51 #uent:-53 #uerc:71 #uero:89 #ueva:-62 #ueve:-55 #uevo:-69
#ughe:61 #ught:-82 #uick:-56 #uido:-79 #uien:60 #uled:51 #ultu:72 #umar:57 #umbr:66 #umer:-52 #unca:-67 #unde:-73
#unge:147 #ungl:59 #unio:146 #unni:54 #unto:-52 #unts:50 #uote:-73 #upan:101 #uper:-59 #uran:148 #urin:-65 #urio:-111
#urne:53 #urno:-59 #urre:58 #urse:-51 #usad:50 #usan:175 #usba:-53 #uscr:-61 #used:80 #uste:55 #utom:95 #uttl:52
#vamo:-85 #vend:179 #veng:110 #veri:80 #vers:120 #vert:75 #vete:-99 #vida:104 #vido:-50 #vidr:91 #view:62 #vino:-72
#vise:53 #visi:-96 #voic:103 #vola:-68 #want:82 #ward:-64 #wate:-57 #weat:133 #wedd:72 #ween:-51 #were:-66 #whol:-69
#whom:-84 #wife:-68 #wifi:241 #wind:110 #wire:-52 #wise:-61 #wist:-62 #with:-63 #wlin:-53 #word:88 #work:56 #worn:-62
#worr:-86 #wors:-75 #wrap:85 #writ:-61 #ximo:-66 #xtos:-60 #yard:-50 #yaro:62 #ybod:52 #ycle:66 #ying:70 #ymen:72
#your:54 #ypin:114 %again_later:-163 %again_later%agree:-88 %again_later%car:-112 %again_later%meaning:51
%again_later%message:-52 %again_later%odometer:61 %again_later%on_way:91 %again_later%phone:158
%again_later%place:-50 %again_later%season:-52 %again_later%staff:175 %again_later%start_again:66
%again_later%who:-95 %agree:-142 %agree%car:102 %agree%car_part:80 %agree%do_it:77 %agree%doubt:50 %agree%family:60
%agree%lift:69 %agree%money:129 %agree%noise:-76 %agree%pay_day:114 %agree%phone:109 %agree%place:145
%agree%start_again:128 %agree%who:52 %agree%wrong_one:70 %away:-116 %away%bring:-84 %away%call_off:97 %away%car:-73
%away%do_it:74 %away%elsewhere:-63 %away%gone_car:-53 %away%lift:-119 %away%message:89 %away%noise:-62
%away%odometer:-79 %away%refuse:68 %away%shift_it:-96 %away%staff:100 %bad:-202 %bad%car_part:-68 %bad%elsewhere:54
%bad%gone_car:69 %bad%question:102 %bad%staff:-53 %bad%who:268 %bring:-51 %bring%call_off:-58 %bring%car:-61
%bring%car_part:93 %bring%doubt:-108 %bring%elsewhere:86 %bring%fails:78 %bring%family:101 %bring%how_long:-69
%bring%leave_me:-63 %bring%meaning:53 %bring%money:61 %bring%on_way:73 %bring%opening:107 %bring%place:68
%bring%question:131 %bring%refuse:106 %bring%staff:60 %bring%start_again:91 %busy:-79 %busy%do_it:65 %busy%family:91
%busy%how_long:77 %busy%machine:-51 %busy%odometer:-103 %busy%on_way:58 %busy%phone:101 %busy%place:-65
%busy%question:168 %busy%refuse:59 %busy%season:82 %busy%shift_it:98 %busy%staff:54 %busy%who:83 %call_off:-72
%call_off%do_it:-87 %call_off%fails:88 %call_off%how_long:124 %call_off%leak:53 %call_off%lift:120
%call_off%money:141 %call_off%odometer:189 %call_off%phone:88 %call_off%refuse:-80 %call_off%start_again:-144
%call_off%thanks:115 %car%car_part:-64 %car%do_it:127 %car%elsewhere:-79 %car%family:-100 %car%meaning:-89
%car%noise:-104 %car%opening:87 %car%phone:87 %car%place:73 %car%question:66 %car%refuse:-57 %car%smoke_smell:-72
%car%staff:132 %car%start_again:101 %car%who:-55 %car_part:-93 %car_part%fails:-70 %car_part%family:80
%car_part%leak:-129 %car_part%lift:64 %car_part%machine:-58 %car_part%money:-74 %car_part%on_way:-80
%car_part%pay_day:70 %car_part%phone:222 %car_part%season:124 %car_part%shift_it:183 %car_part%start_again:55
%car_part%who:157 %car_part%wrong_one:76 %do_it:-165 %do_it%family:-56 %do_it%lift:-73 %do_it%pay_day:-60
%do_it%refuse:91 %do_it%staff:181 %do_it%thanks:82 %do_it%who:139 %doubt:-63 %doubt%family:109 %doubt%how_long:-66
%doubt%odometer:-116 %doubt%place:-69 %doubt%question:54 %doubt%thanks:50 %elsewhere:-99 %elsewhere%fails:-52
%elsewhere%how_long:57 %elsewhere%message:-91 %elsewhere%money:51 %elsewhere%on_way:56 %elsewhere%phone:-92
%elsewhere%place:-144 %elsewhere%refuse:-67 %elsewhere%who:105 %elsewhere%wrong_one:61 %fails:-99 %fails%message:113
%fails%place:232 %fails%refuse:74 %fails%smoke_smell:86 %fails%who:74 %family:53 %family%how_long:77
%family%message:88 %family%phone:104 %family%question:67 %family%shift_it:107 %family%start_again:73 %family%who:-140
%gone_car:-124 %gone_car%leave_me:61 %gone_car%odometer:-91 %gone_car%on_way:-93 %gone_car%question:73
%gone_car%shift_it:94 %gone_car%staff:82 %how_long:-190 %how_long%machine:-54 %how_long%money:82
%how_long%opening:-92 %how_long%phone:-60 %how_long%place:64 %how_long%question:188 %how_long%shift_it:-136
%how_long%start_again:99 %leak:-112 %leak%on_way:54 %leak%phone:59 %leak%question:-63 %leak%refuse:51 %leave_me:-90
%leave_me%lift:118 %leave_me%on_way:73 %leave_me%pay_day:70 %leave_me%refuse:73 %leave_me%thanks:-54 %leave_me%who:55
%lift:68 %lift%message:-80 %lift%on_way:-57 %lift%place:127 %lift%question:50 %lift%refuse:87 %lift%shift_it:74
%lift%staff:65 %lift%wrong_one:88 %machine:302 %machine%odometer:-70 %machine%question:142 %machine%staff:89
%machine%start_again:-53 %meaning:-116 %meaning%message:99 %meaning%money:105 %meaning%odometer:50
%meaning%refuse:-55 %message%money:68 %message%odometer:-56 %message%opening:59 %message%phone:71 %message%place:-57
%message%question:65 %message%refuse:59 %message%shift_it:120 %message%start_again:-139 %message%who:-107
%message%wrong_one:125 %money:-193 %money%odometer:-65 %money%on_way:-67 %money%shift_it:-113 %money%staff:114
%money%who:232 %noise:-52 %noise%question:-126 %odometer:-55 %odometer%place:-87 %odometer%season:-61
%odometer%shift_it:-120 %odometer%staff:-173 %odometer%thanks:-84 %on_way:-88 %on_way%opening:188 %on_way%place:137
%on_way%thanks:-51 %on_way%who:-60 %opening:-253 %opening%phone:64 %opening%staff:-116 %pay_day:-53 %pay_day%phone:53
%pay_day%season:-68 %pay_day%who:71 %phone:-160 %phone%place:72 %phone%refuse:66 %phone%staff:-155
%phone%start_again:52 %phone%wrong_one:-84 %place:-175 %place%question:-58 %place%shift_it:-53 %place%staff:79
%place%start_again:-123 %place%wrong_one:109 %question:-189 %question%refuse:-97 %question%start_again:65
%question%who:87 %question%wrong_one:102 %refuse:-139 %refuse%shift_it:94 %refuse%start_again:81 %shake:-124
%shift_it:-173 %shift_it%who:70 %smoke_smell:-96 %staff%start_again:80 %staff%who:70 %start_again:-106
%start_again%who:-63 %thanks:-150 %thanks%wrong_one:121 %who:-142 %who%wrong_one:69 %wrong_one:-127 @?:227
@car_blue:-136 @confirm_:-104 @odometer:73 @offers:-57 @offers_:-53 @reading:-197 @time_:-107 @times:-99 ^_about:83
^_actually:113 ^_after:-77 ^_al:-79 ^_and:-118 ^_any:-144 ^_at:-79 ^_ayuda:-77 ^_baja:55 ^_ballpark:-60 ^_been:-59
^_blue:56 ^_both:-69 ^_bring:-87 ^_bueno:-56 ^_can:-79 ^_cant:-123 ^_car:-128 ^_change:75 ^_con:-97 ^_confirmed:-50
^_could:56 ^_cualquier:-52 ^_cuanto:132 ^_cuantos:60 ^_de:-145 ^_deje:-115 ^_desde:-51 ^_did:82 ^_do:-212 ^_does:125
^_dont:-60 ^_early:-98 ^_end:-55 ^_eres:53 ^_es:-173 ^_ese:-65 ^_eso:-97 ^_esta:-62 ^_este:-84 ^_estoy:68 ^_feliz:-50
^_fire:70 ^_for:-62 ^_fui:-60 ^_get:-120 ^_good:-140 ^_hace:58 ^_happy:-50 ^_have:-83 ^_hay:-170 ^_hello:-83
^_help:-107 ^_hey:75 ^_hi:80 ^_hm:169 ^_hola:-101 ^_hoy:-110 ^_i:-170 ^_id:-56 ^_it:-149 ^_jajaja:55 ^_la:-157
^_las:-72 ^_last:-55 ^_late:64 ^_leave:-55 ^_let:-52 ^_llevo:-64 ^_lo:-101 ^_lol:96 ^_mal:68 ^_manana:82 ^_mandan:-59
^_mande:65 ^_me:-83 ^_mom:54 ^_monday:62 ^_muy:-55 ^_my:-52 ^_nd:-56 ^_necesito:-51 ^_next:-104 ^_ni:-71 ^_not:-96
^_nunca:-85 ^_o:-86 ^_ocupo:59 ^_of:62 ^_oh:-53 ^_otro:-60 ^_our:57 ^_out:151 ^_oye:73 ^_para:-131 ^_por:-105
^_puede:-118 ^_pueden:-53 ^_puedo:-141 ^_puro:-50 ^_que:72 ^_quede:-68 ^_quien:-67 ^_ring:57 ^_saturday:84 ^_see:-57
^_send:-61 ^_shes:83 ^_should:60 ^_sin:-55 ^_someone:-88 ^_son:-56 ^_sorry:67 ^_still:-150 ^_stolen:61 ^_stop:-57
^_su:167 ^_take:-76 ^_te:-58 ^_that:-122 ^_the:-63 ^_there:-111 ^_third:-70 ^_this:-83 ^_tienen:-109 ^_time:-82
^_traded:-51 ^_trae:-75 ^_un:-93 ^_viernes:-56 ^_voy:84 ^_want:113 ^_we:-104 ^_well:102 ^_what:81 ^_where:78 ^_who:65
^_why:-66 ^_will:-115 ^_wipers:103 ^_would:-60 ^_y:-51 ^_ye:-90 ^_yo:-62 ^_you:-235 ^_your:-57 a:-98 a__about:50
a__back:-52 a__book:65 a__can:135 a__carro:-74 a__casa:126 a__con:51 a__de:-53 a__for:-64 a__from:125 a__gente:-60
a__hora:90 a__in:-84 a__le:83 a__mama:53 a__mejor:104 a__ninos:-60 a__of:106 a__on:-93 a__or:-92 a__person:111
a__that:67 a__y:57 a_bird:140 a_boat:122 a_bot:110 a_bus:153 a_call:-52 a_charge:-122 a_como:-53 a_computer:78
a_day:181 a_fee:-70 a_good:66 a_human:-68 a_la:-55 a_later:-83 a_los:-58 a_meeting:94 a_no:58 a_number:-65
a_person:50 a_que:115 a_real:119 a_recibir:132 a_ride:-73 a_robot:77 a_tuesday:-82 a_una:-55 a_ver:-81 about_the:62
abren_$:-56 aceite:77 aceite_el:-62 aceptan:218 acuerdo:69 acuerdo_$:80 after_$:63 after_all:61 again_$:143
agarran:60 agarro_el:53 ahi:76 ahi_$:148 ahi__mi:83 ahi_estoy:62 ahi_paso:-57 ahora_$:121 ai:100 al:-76 al__a:85
al_rato:69 al_trabajo:66 algo:-52 alguien_$:-80 alguien_que:82 all:-137 almost:-55 already:-69 also:79 alto_$:-61
always:-55 am_$:-68 am__going:-58 am__talking:52 am_i:69 amor:128 and:-60 and__are:-155 and__my:98 and__the:59
and__there:108 and__you:200 and_can:127 and_did:102 and_do:50 and_have:-51 and_is:192 and_not:84 and_the:-60
and_you:-107 anda:-128 andan:100 ando:-66 antes:-107 antes_de:-66 any_of:56 anybody:52 anymore_$:71 anything_else:52
app:189 appointment_$:-76 appointment__i:99 aqui_no:-57 are:81 are_$:-81 are__a:123 are__again:94 are__guys:-69
are__on:-78 are__open:64 are__the:66 are__there:-100 are_they:76 are_we:65 area:78 arm:-63 arreglan:89 arriba:68
as:-62 as_a:138 as_i:114 as_well:-58 asap:-56 asi:-85 asi__dejo:-64 asking_$:-75 at_$:-157 at__could:-63
at__friday:95 at__other:-55 at__the:74 at_all:137 at_and:-52 at_home:86 at_my:-81 at_what:71 atiende:72 atras:-68
auto:138 auto_reply:93 aviso_$:-55 away_from:51 ayer:-68 ayuda:-85 ayuda_$:-75 babe:165 back_$:158 back_on:-51
bajo:59 ballpark:-58 ballpark_$:-60 banda:78 bano:80 bateria_$:-52 be:72 be__for:95 be__on:106 be_a:92 be_the:89
be_there:-192 before:-53 before_$:138 belt:-56 bici:67 bien_con:84 bike:84 black:-54 blanca_$:-72 blanca__la:52
blocked:74 boat:78 body:-73 book:-99 booked:57 bot:126 box:-55 brake__on:66 brakes_$:-55 bring:131 bring_both:79
bring_it:-81 bring_my:60 bro:69 bueno:-84 buenos:116 buenos_dias:115 bulb:53 bus_stop:115 but:-58 but__you:61
but_do:60 but_i:-61 but_what:69 buy:97 by:-81 by__the:58 by_my:-64 by_the:-155 c:-119 cafe:55 call:-68 call__i:61
call_back:-53 call_my:-102 calor:77 cambiado:-68 cambiar:64 cambiaron:-51 can:183 can_$:-86 can__bring:113
can__check:83 can__come:-116 can__do:-239 can__drive:64 can__drop:97 can__leave:62 can__pick:67 can__talk:-100
can__the:-63 can__with:-78 can_do:-147 can_my:403 can_someone:53 can_we:-54 can_you:105 cancel:58 cancel_$:-81
cancel_culture:72 cancel_me:61 cant:-69 cant__in:-55 car:80 car__the:84 car__you:53 cards:59 cards_$:59 carro:-101
carro__el:-79 carro__la:50 carro__para:-73 carros:121 carros_$:-85 casa:131 cash:111 cat:80 cayo:-53 celular:67
celular_$:64 cerca:66 change__appointment:89 charge:-133 charge_$:-105 cheaper:-112 check_$:-64 check_my:100
checo:-59 church_$:-64 cierto:66 cita:-53 cita_$:-97 cita_el:67 cita_que:59 clases:81 class:-56 close_to:62 code:63
college:-62 comadre:131 come:75 come_$:-77 come__it:65 come_in:127 coming:-66 coming_$:-69 como__de:-104 como__mi:55
como__que:-70 como_es:79 como_llego:-62 como_lo:74 compadre_$:-55 company:-64 compran:110 compro:-53 computer_$:-57
con_alguien:-56 con_el:-61 con_mi:-86 con_quien:-59 con_ustedes:-58 contesta:74 cosa:65 cosa_$:145 cosa_de:-70
could__be:89 could__do:-70 could__it:72 covered:-78 crew:-70 cual_de:64 cual_es:-57 cualquier:53 cuando__en:68
cuando_llegue:51 cuando_me:-64 cuando_regrese:70 cuanto:-109 cuanto__es:77 cuanto__y:109 cuanto_tiempo:55
cuantos_dias:-58 culture:72 cupon:70 customer:-50 dad:92 dan:221 dar:-54 date:70 daughter__it:63 day_$:-78 day__i:91
day_is:67 days:-68 days__you:-63 de_$:-69 de__a:-61 de__con:63 de__el:-93 de__escuela:51 de__este:55 de__la:-75
de__le:82 de__me:-74 de__o:63 de__otra:98 de_aceite:-60 de_acuerdo:-56 de_espera:66 de_fumar:57 de_llantas:159
de_paso:69 de_persona:-71 de_que:-88 de_regreso:-61 de_todos:70 de_trabajo:-54 de_una:-98 de_ustedes:-77 de_vida:-74
de_vuelta:57 decir:-76 decirle:73 deep:-63 deja:-69 dejar:102 deje:59 dejo_$:-65 dejo__llaves:73 dejo_de:-83
dejo_las:73 del_$:51 del__de:-65 del__se:57 del_carro:-122 demas:54 demasiados:-58 deposit:164 deposito:57
descuento:-129 despues_del:59 dia:-53 dia_$:-64 dia__las:-51 dia__mi:50 dia_de:-96 dias:-64 dias_$:113 did:185
did__get:77 did__last:67 did__move:-86 did__say:-64 did_i:102 did_it:-116 did_my:108 did_that:-82 did_you:173
didnt:-70 digo:-115 digo_$:-51 dijo:68 discount:-57 do:110 do_$:-146 do__and:114 do__at:-58 do__close:-102 do__do:54
do__go:-61 do__guys:99 do__know:-56 do__open:-78 do__pay:-97 do__sell:105 do__shut:-111 do__take:138 do__turn:102
do__use:-72 do_i:89 do_instead:-100 do_my:-50 do_they:-75 do_you:478 does__matter:72 does_it:108 does_not:111
does_that:-70 doesnt:-55 dog:163 dogs:129 domingo:-65 don:72 donde:100 donde__la:85 donde_es:-52 donde_me:-50
done_$:119 dont:-93 door_$:124 dos:-141 down_$:-88 drive:-51 drive_me:89 drive_to:-58 driving:72 driving_$:-56
driving_with:180 drop:60 drop__at:-52 drop__car:125 drop_box:-63 drop_it:124 due:-53 due_for:-88 dueno_$:51
during:-55 e:112 early:-56 early_bird:-98 echeme:-52 eh:84 eh_$:88 el__anoche:98 el__carro:-82 el__dia:-52 el__el:-70
el__es:58 el__hoy:55 el__la:-56 el__me:-110 el__mejor:50 el__no:-55 el__paso:50 el__puedo:64 el__rojo:-50 el__se:-67
el__tienen:62 el__trae:115 el_aceite:-52 el_aire:133 el_carro:-85 el_de:-63 el_del:-62 el_dia:-66 el_freno:-61
el_jueves:-51 el_lunes:-57 el_martes:-62 el_numero:70 el_recibo:58 el_rin:87 el_sabado:52 el_tablero:60
el_telefono:101 el_trabajo:-70 email:101 empty:98 en:-55 en_$:-70 en__con:-56 en__lugar:103 en__mismo:-91
en__momento:61 en__tablero:72 en__trabajo:-61 en_este:88 en_la:-52 en_mi:-52 en_serio:-66 en_una:93 end:-56 ends:81
ends_at:80 entendi:107 entregan:-55 entro:-55 entro_$:-52 era:136 era_$:-81 era__que:64 era_del:-54 era_el:80
era_lo:80 era_para:141 eres__o:62 es:-110 es_$:-50 es__cita:94 es__lo:54 es__numero:71 es__y:54 es_de:-130 es_el:95
es_para:-77 es_un:-53 es_y:156 esa:-99 escribe:94 escriben_$:-70 escribirme:-51 escribo:62 ese_dia:79 eso__lo:103
eso_me:101 eso_y:69 espacio:-58 espanol:61 espanol_$:-76 especial:-51 espera:62 esperar:-72 esperar_$:-67 esta:-50
esta_$:-66 esta_el:61 esta_semana:77 estaba:-56 estamos:-70 este__el:-51 este__no:58 este_es:-62 este_momento:87
este_numero:-51 estimado:-58 esto_$:-99 estos_mensajes:-70 estoy__mi:66 estoy_bien:-60 estoy_en:-57
estoy_manejando:167 even:-79 ex:-50 exactly_$:-53 factura:64 favor:-96 favor_$:-71 fee:-68 feels:-59 feliz:-51
feo:-66 fila:60 fill:58 fin:-54 find_a:64 fire:54 first:-93 fix:126 fleet:59 flies:114 floor:74 for_$:-82 for__car:83
for__tires:112 for_again:85 for_free:-57 for_that:-56 for_the:54 for_what:-128 foto:184 four:-64 free:-57 free_$:-146
free__my:-54 frenos:-91 frenos_$:-149 friday_$:-120 friday__i:92 friday__you:59 friday_one:66 from__text:83
from_home:137 from_my:118 from_your:-69 fue_el:101 fui:-60 fumar:57 game:65 game_$:-57 ganaste:67 gano:100
garantia:95 get__a:-73 get__you:-61 get_it:77 get_me:-54 get_my:-88 get_the:78 gets:-69 gift:72 girl:60 go_through:67
god:-93 goes__to:66 going:-53 going_on:-98 going_to:50 gone_$:-75 good_for:59 got_$:-91 got_any:170 gracias_$:-87
gracias_por:79 grandma:109 green:-57 grua:167 grua_$:67 guy_who:63 guy_with:63 guys:52 guys_$:-145 guys_do:96
guys_have:-65 guys_take:100 hablamos:-52 hablando:85 hablar_con:-88 hable:63 hace_falta:55 hace_ruido:-87 hace_un:108
hacen:128 hacer:52 hacer_$:-67 haciendo:63 had__phone:60 had_my:52 haga:78 hago:-77 half:102 half__hour:72 half_an:72
happens:78 happens__i:-64 happens_if:-64 hard:55 hard_to:50 has:-67 hasta_entonces:74 have__be:66 have__been:137
have__number:-108 have__this:78 have_a:63 have_anything:-81 have_loaners:71 have_my:-76 have_someone:-78 have_you:165
hay:196 hay__en:90 hay_quien:118 he:-80 hello:-83 help_$:-126 here:114 here_$:67 hermana_$:70 hey:74 hey__i:-128
hey__is:62 hey_it:93 hi:76 hi__is:113 hiring:107 his:-58 hit:-79 hitch:92 hm:169 hombre:-53 home__the:-52
home_from:-79 hora__a:-50 hora__la:51 hora__y:118 hora_abren:53 hora_me:123 hour_$:-55 how:-126 how__are:-67
how__can:-52 how__do:-110 how__i:-91 how__should:-67 how__was:60 how__you:-95 how_about:63 how_bad:67 how_do:-159
how_does:-50 how_long:80 hoy:95 hoy_$:-69 hoy__las:52 hoy_a:89 huh:87 huh_$:91 i__a:110 i__both:80 i__drive:-63
i__for:99 i__home:-70 i__it:-110 i__my:91 i__out:80 i__say:125 i__that:85 i__the:71 i__there:-79 i__to:136 i__use:66
i__with:158 i_am:77 i_be:-114 i_booked:82 i_can:-154 i_cant:88 i_come:-104 i_fill:58 i_get:77 i_going:-58 i_got:105
i_know:-114 i_leave:117 i_lose:64 i_mean:191 i_miss:-79 i_need:166 i_pay:130 i_sit:70 i_talk:-100 i_talking:52
i_text:79 i_wait:-68 i_want:-77 iba:56 ice:113 ice_$:112 id:-116 idea_$:94 if:-56 if_i:55 if_my:173 if_the:-69
iglesia:-50 ill:-99 ill__there:-65 ill__your:52 ill_bring:-50 ill_do:53 ill_see:52 im__a:62 im__out:70 im__the:55
im__with:179 im_a:-69 im_driving:127 im_going:52 im_not:-79 im_off:90 im_ready:-168 imagen:79 in__i:-59 in__new:58
in__red:-52 in__the:61 in__when:67 in_a:136 in_my:-102 in_there:87 in_tomorrow:68 info:-113 info_$:-113
inspections:51 instead_$:74 into:53 into_the:62 ir:76 ir_mi:77 is:95 is__a:111 is__at:57 is__car:144 is__going:71
is__inspection:76 is__is:67 is__ok:67 is__one:-63 is__still:56 is__street:61 is__that:89 is__the:148 is__time:-53
is__urgent:-84 is__wifi:186 is_a:-90 is_asking:-86 is_for:57 is_gone:-51 is_making:-52 is_me:77 is_mine:53 is_my:248
is_no:-82 is_on:133 is_that:64 is_the:95 is_there:258 is_this:-111 is_your:100 ish:-82 it:-123 it__all:50 it__and:117
it__do:75 it__for:63 it__if:160 it__like:-59 it__me:71 it__night:-57 it__same:77 it__till:80 it__to:91 it__under:-64
it__yesterday:66 it_a:-89 it_after:66 it_again:106 it_cost:51 it_do:55 it_does:70 it_going:51 it_have:67
it_instead:52 it_is:-113 it_matter:72 it_now:-58 it_ok:119 it_that:-51 it_urgent:-84 it_wait:60 jaja_no:68 jajaja:56
je:277 job:-50 jobs:65 juego:156 jueves_$:-63 jueves_por:74 july_$:-53 junio_$:-76 junto:-52 just:-84 key:53
knock:133 know:-88 know_you:-114 la__asi:-57 la__blanca:-63 la__cuando:84 la__de:57 la__del:96 la__el:-113 la__es:144
la__hasta:106 la__las:65 la__o:151 la__que:55 la__ustedes:124 la__vez:142 la__y:-70 la_bateria:67 la_bici:68
la_blanca:62 la_camioneta:-57 la_casa:64 la_de:85 la_escuela:56 la_factura:87 la_foto:99 la_garantia:103
la_lavadora:-70 la_luz:-53 la_nieve:61 la_otra:87 la_pieza:123 la_puedo:-52 lady:59 laptop_$:73 las_$:-90
las__bien:75 las__pero:-50 las__que:54 las__si:72 las__ya:59 las_llantas:-54 las_se:-57 last:-58 last__you:62
last_night:73 late_$:-101 late__i:72 late__there:64 later_time:-50 laughed:70 laughed_at:70 le__a:-143 le__el:147
le__la:76 le__para:-50 le__su:-62 le_digo:-55 le_gusto:90 le_pusieron:62 le_toca:-74 le_van:-51 league:88
leave__key:81 leave_the:90 lentes:114 les:73 les_dejo:115 let_the:60 lets:-75 light:-83 like:-73 like_$:91
like__come:80 like_to:63 limp:-58 line:-57 link:89 list:-53 little_league:98 live:-76 llama:71 llamo:85 llanta_de:53
llantas:126 llantas_$:-63 llego:59 llego_$:-111 llego__la:80 llego_a:97 llego_en:-59 llego_tarde:66 llegue_a:68
llevar:108 llevarla:-60 llevo:-54 llevo_a:-73 lo:-103 lo__a:-95 lo__de:-100 lo__el:51 lo__la:59 lo__no:131
lo__pero:52 lo__un:78 lo__yo:119 lo_dan:-62 lo_hacen:-85 lo_hice:54 lo_llevo:86 lo_mio:66 lo_puede:141 lo_puedo:-116
lo_que:-70 lo_siento:105 lo_trae:99 loaners:71 lobby_$:53 location:-89 loco:56 lol:70 lol_$:56 long__i:-64
long__you:90 long_do:-61 long_is:50 longer__the:58 look__a:121 los__a:-66 los__de:64 los__no:-81 los__y:59 los_de:65
los_ninos:-137 los_que:-56 loved:191 low:-56 luego_$:124 luego_le:-61 lugar_$:74 lunes_me:-74 luz:-69 machine_$:54
main:-84 making:-56 mall:-70 mama:105 mama_$:147 man:-92 manana_$:-80 manana__me:-50 manana_me:68 manda:-96 mandan:89
mande:78 mande_$:100 mando:57 manejando_$:-130 manejar:-68 manners:-59 maquina_$:53 marca:131 marcar:-61 marco:60
martes_$:-96 mas:-148 mas_tarde:61 matter_$:95 may:186 may_$:-78 mayo_$:-68 me:-110 me_$:-65 me__a:57 me__after:81
me__alguien:69 me__el:83 me__eso:79 me__it:53 me__mal:60 me__mandar:76 me__marcar:-61 me__o:74 me__sin:89 me__the:94
me__una:-67 me__you:177 me_about:-61 me_acuerdo:125 me_again:-67 me_at:68 me_atiende:72 me_back:-57 me_dan:73
me_from:81 me_fue:88 me_home:83 me_how:103 me_i:100 me_mandan:90 me_puede:-90 me_tienen:-83 me_toca:123 me_va:93
me_with:76 mean_$:128 mecanico:-99 mejor__el:74 mensaje:197 mensaje_$:-106 mensajes:-165 mes:-55 message:145
message_$:113 message__i:59 message_me:-116 message_when:59 messages:-59 mi:70 mi_$:-84 mi__a:-67 mi__con:66
mi__el:-64 mi__me:-120 mi__no:102 mi__se:-76 mi_cita:53 mi_hermana:52 mi_nombre:55 mi_numero:-53 mientras_$:65
mil:-157 mil_y:-83 mileage:-75 min:-76 mio:152 mio_$:82 mismo__de:67 mismo_dia:-52 mm:-75 mom:113 mom__you:72
momento:61 monday_$:-113 monday__is:75 monday_and:70 monday_please:77 more:-92 morning_$:-86 motor:-50 much__i:-51
much_should:-52 muchacho:61 mucho:-62 mucho_$:-51 muerte:-68 must:-57 muy:-121 my__and:-58 my__are:-54 my__be:-52
my__done:130 my__drop:182 my__fell:79 my__go:55 my__home:-53 my__in:67 my__is:-72 my__needs:90 my__no:-50 my__one:193
my__phone:51 my__please:54 my__says:-73 my__there:52 my__to:64 my__too:156 my__was:-53 my__what:80 my__will:-91
my_appointment:110 my_calendar:-52 my_car:-57 my_dad:-59 my_dog:116 my_end:58 my_info:-87 my_invoice:108
my_mechanic:-53 my_new:62 my_number:-125 my_old:105 my_phone:94 my_spare:64 my_sunglasses:59 my_texts:62
my_warranty:54 my_wife:-64 n:-66 na:-75 nada:-67 nadie:-54 name:-82 nao:166 need__be:75 need__bring:85
need__change:143 need_a:-81 need_that:-125 need_to:125 needs:50 new_one:87 new_phone:63 next_time:59 next_tuesday:104
ni:-176 nieve:61 night:117 night_$:69 night_before:81 ninos_$:75 ninos__la:-64 no:57 no_$:-125 no__acuerdo:125
no__amor:-58 no__at:125 no__donde:53 no__el:-53 no__eso:71 no__here:-116 no__lo:77 no__mi:-100 no__quien:78
no__you:68 no_but:77 no_era:51 no_esta:63 no_estoy:87 no_gracias:80 no_hay:-95 no_idea:156 no_le:-72 no_les:51
no_lo:157 no_mi:-84 no_more:-55 no_my:-72 no_noise:157 no_pero:115 no_se:169 no_sigue:-60 no_tengo:-60 no_thanks:134
no_y:54 nobody:-70 noche_$:55 noise:52 noise__all:158 noise_at:158 nomas:-59 non:132 noon:-58 noon_$:-74 not:-50
not__me:-62 not__this:70 not_a:-55 not_be:90 now:-84 now_$:-78 now_and:57 nuevo:-56 number_$:-87 number__your:-52
number_from:-76 numero_de:77 nunca:-61 o:84 o__de:52 o__es:134 o_como:61 o_lo:62 o_lunes:-62 o_no:199 o_que:-50
obrigado:71 of:-56 of_$:132 of__do:91 of_it:51 of_my:77 of_office:131 of_you:-72 of_your:-112 off_$:-85 off_the:92
off_tomorrow:60 office:64 office_$:-97 oh:-54 oil:71 oil_$:82 oil__you:109 oil_change:-53 ok__i:54 ok__it:-56
ok__my:142 ok__the:136 ok_if:188 ok_is:63 ok_you:-51 old:83 old_$:-63 on_$:-69 on__th:136 on__the:115 on_for:66
on_friday:57 on_in:66 on_it:150 on_th:-55 on_the:-66 on_tuesday:-72 once:-71 one:-81 one__i:66 one_or:151
one_with:-56 only:-65 open:-112 or_$:-62 or__it:-51 or_friday:91 or_is:-98 or_something:54 other:54 otro_en:61 our:83
out_$:-56 out__door:-70 out__my:-54 out__office:131 out__the:109 out__your:-61 out_by:-61 out_to:70 over:50
over__weekend:61 over_the:80 over_there:78 owe:-53 owns:72 oye:150 pads:-54 pagar:104 pagos:91 paint:61 papa:-54
paperwork:50 paperwork_$:50 para__de:-69 para__lunes:120 para_alla:-51 para_cuando:-65 para_el:86 para_las:54
para_los:54 para_manana:-102 para_que:-90 parada:55 pare_$:-56 parked:-62 parking_$:72 part:72 partes:56 partido:90
parts:61 parts_store:-56 pas:104 pasa:106 pasa_la:80 pasar:-57 paseme:-55 paso_$:-54 pass:-50 past:-58 pay:111
pay_for:-71 pedal:-62 pedi:102 pero_necesito:73 pero_no:52 pero_ocupo:-67 person:-62 persona:-69 peso:91 phone_$:103
phone__when:-61 phone_me:-72 pickup:-52 pie:-55 pierdo:-61 pieza:107 pieza_$:65 pin:-132 pin_$:-164 place_$:-53
play:73 please_$:-186 please__is:86 please__it:71 please_im:-55 please_take:72 pm:-64 pm_$:-139 pm_and:139 pone:-53
ponen:185 popcorn:65 por:-99 por__la:-55 por__se:64 por_donde:-50 por_el:57 por_favor:-51 por_la:83 por_las:75
por_que:-91 porq:53 porque:56 practice:53 precio:-81 precio_de:-94 pregunteme:73 premio:91 prestado_para:-72
prestan:114 prestan_carro:109 price:-127 puede:71 puede_$:-122 puede__alguien:75 puede__mi:188 puede_esperar:-105
puede_ir:116 pueden__a:61 pueden_mandar:83 puedo_$:-55 puedo__a:87 puedo__asi:-60 puedo__con:70 puedo__hoy:-52
puedo__la:-59 puedo_dejarlo:56 puedo_hablar:67 puedo_llevar:107 puedo_seguir:-125 puedo_ver:128 puerco:110 pues:-62
pull:-57 puro:-77 put__in:57 put_in:82 put_the:-68 que_$:319 que__a:-74 que__abren:54 que__de:70 que__es:175
que__eso:-53 que__hay:-55 que__lo:-119 que__me:129 que__que:-55 que__tengo:66 que__toca:-138 que__trabajo:60
que_dia:85 que_dias:-55 que_el:57 que_es:-53 que_hacer:115 que_hora:52 que_la:60 que_le:-78 que_les:-67 que_lo:58
que_me:-103 que_tan:-67 que_tiene:-54 que_ustedes:54 que_voy:102 que_yo:54 quede:-59 quick_$:-60 quien__el:88
quien__y:119 quien_eres:-75 quien_es:-91 quien_me:92 quiere:56 quieren:-70 quiero__cita:-52 quit:-87 quote:-73
quote_$:-67 ran:-52 ran_over:-52 rate:-58 rather:-53 rayaron:62 read:77 ready_$:102 real_person:59 really:-104
receipt:67 recibo:144 recoger:-78 records:68 red:161 red_$:53 regrese:58 regreso:-61 remember_$:-51 rent:74 repair:69
replace:67 replaced:-101 reply:83 report:107 respondo:113 retrasado:58 revisan:117 ride_$:52 right:81 right_now:137
rin:138 ring:-90 ring_me:-74 robot:93 round:-53 ruedas:56 running:54 sabado_$:-155 sabado__las:50 saben:84
saber_si:129 sala:82 sale_$:-80 sale_y:59 sali:68 salida:-89 same__as:56 same_day:-117 santo:-50 sat_$:-51
saturday_$:-60 saturdays:-63 saturdays_$:-64 says:-128 scratch_me:59 se:-108 se__de:131 se__fue:87 se__llevo:52
se__y:109 se_me:58 seat:53 seats:93 see__message:59 see__then:-62 see_you:61 see_your:59 seguir:-67 seguro_$:64
sell:82 semana__las:79 send__a:66 sent:76 ser:-74 ser_$:-79 sera:64 serio:-66 servicio_$:54 servicio_de:52 set:-56
she:-61 shop_$:-67 should__be:-80 should_i:87 shut:-111 shuttle:52 si:-61 si__viernes:59 si_el:64 si_la:112
si_llego:125 si_lo:-96 si_pero:-131 si_quiero:-68 side:-102 side_$:-101 siendo:-52 siento:89 siete:-50 sigo:-91
siguen__el:-124 siguen_en:-130 silenced:73 silla:85 silla_de:99 sirve:67 slot_$:-62 slot__you:72 slow:-50 snow:176
so:-117 so__i:-62 so_the:53 sold:-53 sold_it:-53 some_other:63 someone_$:-66 someone__me:147 something_$:56 son:-175
son_$:-92 son__it:78 sorry_$:-83 sorry_i:220 soy:-84 spam:-92 spare:64 speak:-73 speak_with:-53 spot_to:62 spring:-55
squeaking:80 st_$:-79 still__my:64 still__on:-65 still__the:-57 still_coming:74 still_have:58 still_on:-54 stop_$:-58
stop__the:76 stop_at:76 struts:-65 su:236 su__es:63 su_mensaje:84 sunday:-75 sunglasses:59 sure_is:-63 sus:76 t:-240
talk:76 talk__a:-130 talk_to:-158 talking_to:52 taller_$:-70 tambien:101 tambien_$:143 tan:-107 tank:50 tarde:73
tarde_se:66 te:195 te__luego:78 te_escribo:92 tech:-92 tell_the:-73 ten:-80 tendran:63 tenemos:66 tengo_el:-73
tengo_que:81 tengo_un:60 terrible:-74 text:81 textos:-60 texts_please:64 th:-85 thank:-74 thank_you:-75 thanks:78
thanks_$:-64 thanks__you:153 that_$:-107 that__last:113 that__on:81 that__the:-55 that__to:-62 that_car:-53
that_day:-54 that_for:67 that_in:65 that_is:-160 that_one:-51 that_service:-62 that_was:76 that_you:138 the_$:143
the__before:94 the__day:-79 the__do:78 the__fella:75 the__have:76 the__i:62 the__now:53 the__number:61 the__of:68
the__off:71 the__on:101 the__one:97 the__or:-61 the__out:62 the__please:58 the__service:88 the__shop:58
the__side:-101 the__that:123 the__while:68 the__with:109 the__you:-102 the__your:52 the_back:68 the_blue:-72
the_box:-59 the_check:-60 the_coffee:-89 the_door:83 the_game:80 the_key:52 the_last:-61 the_messages:-82 the_nd:67
the_new:81 the_night:53 the_office:53 the_oil:-52 the_one:-54 the_part:98 the_parts:85 the_phone:50 the_pm:63
the_same:118 the_shop:57 the_snow:-56 the_th:51 the_trunk:77 the_waiting:115 the_water:-55 the_way:85 the_weekend:62
the_wipers:-69 the_wrong:-66 them_$:-65 then:-50 there__charge:-122 there__fee:-70 there__to:177 there_a:112
there_is:-144 there_when:55 these:-55 think:-75 this_$:-59 this__for:76 this_a:131 this_is:-51 this_number:55
through_$:125 thurs:-73 thursday_$:-91 thursday__is:64 thursday_and:50 thursday_at:79 tiene:-76 tienen:131
tienen__de:130 tienen__el:-110 tienen__para:78 tienen_donde:90 tienen_el:-81 tienen_lugar:-117 till__time:-51
time__i:138 time__it:125 time__week:87 time__you:-189 time_do:-61 time_for:52 time_to:-68 times:-56 tio:140 tipo:-66
tires_$:-83 tires__the:50 to:-76 to_$:-105 to__again:-51 to__anything:153 to__church:56 to__it:-83 to__me:-53
to__my:-59 to__real:-96 to__with:-53 to_bring:103 to_change:107 to_drive:-60 to_look:-52 to_me:53 to_monday:70
to_my:72 to_our:57 to_put:-59 to_sell:-56 to_send:93 to_stop:62 to_take:-51 to_talk:-66 toca_$:-86 toda:-77
toda_la:-57 todavia:67 todavia_me:55 todavia_no:77 today:-68 todo:-113 todo_bien:77 todos_los:92 told:-50 toma:-71
tomo:-60 tomo_la:-60 tomorrow_$:-111 tomorrow_is:52 too_$:57 top_$:-68 tortillas:144 tow:192 tow_$:122 tow_hitch:57
trabajan:64 traded:69 trae_$:75 traigo:-79 trailer:69 trip:191 troca_el:-69 truck:-64 trunk:77 trunk_$:77 try:-60
tu:161 turn:57 turn_them:66 turned:75 two:-69 typing:114 uds:-62 uh:-217 un__o:99 un__que:60 un__rojo:66 un__y:-53
un_carro:-87 un_dia:-65 un_premio:90 un_robot:51 una:98 una__de:64 una__o:111 under:-74 under_my:-57 under_the:57
until:70 up:-137 urgent_$:-80 us:-54 use_the:-63 used:80 used_to:-56 ustedes:79 ustedes_$:-158 ustedes__el:73 va_a:74
van:55 van_a:89 venden:117 vender:-62 vendi:-82 vendimos:-57 ver:75 ver__me:51 verdad_$:111 very:-56 vez:94 vez_$:130
vida:117 vidrios:91 viene:-66 viene__el:-54 viernes_$:-89 viernes__las:-69 viernes_a:-69 viernes_pero:83 viernes_y:60
vino:-72 voice:68 voy_a:-115 voy_con:85 voy_manejando:95 voy_me:63 voz:134 wait_there:-71 wait_till:65 waiting:67
waiting_room:59 walk:51 want:80 want_a:51 want_the:89 warranty_$:-69 was:68 was__again:145 was__for:50 was__the:70
was_it:84 was_on:106 was_that:250 water:-57 way_$:-83 way__you:95 we_do:-54 we_have:83 we_will:-83 weather:98
wed_$:-61 wedding:72 weekends:-54 well_$:63 were:-66 what_$:293 what__do:-101 what__if:-64 what__is:57 what__my:-92
what__that:-85 what__the:-111 what__this:-171 what__was:227 what__you:-303 what_a:81 what_am:-62 what_company:-52
what_did:-129 what_do:-108 what_does:-118 what_time:202 what_was:-101 wheel:-55 wheel_lock:60 when__i:68
when__you:-53 when_do:-147 when_im:103 when_the:-88 when_you:55 where__i:-74 where__the:-69 where__you:-54
where__your:-65 where_are:-92 where_is:89 which__do:-107 which__is:144 which_days:-62 which_shop:-77 who__asking:-75
who__i:-94 who__the:319 who__you:-130 who_am:-67 who_are:-120 who_is:-120 who_this:-113 whole:-69 whom:-84 why:-96
why__you:-80 why_are:102 why_do:-181 wife:-76 wifi:241 will__be:57 will__it:-94 will__there:-107 will_bring:-93
will_it:74 will_you:141 win:66 window:97 with_$:-52 with_me:62 with_my:57 with_the:-62 won:246 wont_be:-58
wont_start:70 work:-108 work_on:96 working:62 worn:-62 y_$:-84 y__ahi:-81 y__donde:60 y__es:-104 y__le:-54 y__lo:64
y__me:53 y__que:78 y_a:-50 y_eso:136 y_les:64 y_me:-65 y_puedo:71 y_tambien:96 y_tienen:85 ya:-136 ya_$:-95 ya__a:92
ya__el:54 ya__las:91 ya__mi:189 ya__vendi:54 ya_esta:96 ya_fue:-56 ya_no:-74 ya_pedi:105 yep__you:68 yes_$:-85
yes__do:56 yes__i:154 yes__the:61 yes_and:-57 yes_do:66 yes_friday:65 yes_i:-52 yes_please:56 yes_the:56 yet:56
yet_$:87 yo:-59 yo__aviso:50 yo__se:137 you:103 you_$:-95 you__a:230 you__anything:-80 you__are:-58 you__at:-83
you__before:-56 you__did:-50 you__do:100 you__fix:82 you__have:-91 you__i:-52 you__in:173 you__is:81 you__it:-50
you__late:-53 you__loaners:64 you__look:60 you__me:-80 you__open:-51 you__or:-62 you__take:90 you__that:114
you__the:94 you__up:-113 you_a:128 you_are:-77 you_call:-120 you_can:-133 you_check:68 you_close:-99 you_could:-53
you_fix:73 you_from:-95 you_got:114 you_had:-64 you_hiring:86 you_like:62 you_move:-86 you_need:-50 you_on:-89
you_people:-120 you_put:151 you_say:-92 you_see:72 you_sell:112 you_send:97 you_shut:-111 you_take:111 you_text:102
you_then:-62 you_there:83 you_to:-77 you_tomorrow:-58 you_up:157 you_with:-50 your:68 your__and:-55 your__for:-57
your__is:64 your__on:58 your__when:59 your_message:59 your_records:-81 your_shop:-61 youre:-100 yours:95 youve__a:-52
"""
