"""What speaks for and against `gone`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "gone"
BIAS = -158
WEIGHTS = """\
#abaj:-35 #aber:-40 #abra:46 #abue:-41 #acci:97 #acer:-40 #ache:-62 #acia:-30 #acio:49 #acke:36 #acor:54 #acro:69
#acti:26 #actu:50 #aded:106 #ader:31 #adez:-40 #adin:40 #ador:45 #adre:-27 #affi:-38 #afra:57 #ages:38 #agon:40
#agra:-50 #agua:39 #ahor:-61 #aigh:-25 #aigo:59 #aint:-49 #aire:-32 #airp:-33 #aken:-40 #aled:143 #alen:-45 #aler:33
#ales:-28 #algo:-39 #algu:-28 #alin:-35 #alki:-40 #allo:42 #ally:27 #almo:-34 #alon:69 #alre:-25 #amos:83 #ampe:33
#anan:-25 #anch:41 #anco:40 #anda:55 #ande:47 #andl:-59 #ando:-47 #ange:36 #anoc:43 #anos:44 #anse:63 #ante:-47
#ants:-28 #anua:-54 #anym:74 #anza:-39 #apag:-26 #apar:29 #aper:-29 #apin:-34 #appe:125 #appy:34 #apri:-36 #arad:-55
#arag:-29 #arca:34 #arch:32 #arda:-44 #arec:26 #arel:-48 #aren:-54 #arki:59 #army:52 #aron:132 #arou:-29 #arra:58
#arri:33 #asam:-40 #asem:-29 #ashe:-28 #asnt:-42 #asse:66 #asta:-41 #asto:34 #atar:100 #atbe:53 #atch:87 #ated:121
#atem:55 #ater:-52 #atio:26 #aule:104 #ause:50 #auto:108 #avar:-25 #aven:132 #avia:-33 #away:51 #ayme:36 #back:129
#baja:56 #banc:40 #band:-27 #bank:225 #bare:-48 #baro:110 #base:-79 #beat:-66 #been:29 #beer:-28 #befo:-36 #bend:-35
#biam:38 #bici:-27 #bike:63 #bile:26 #bird:-28 #bles:34 #blic:30 #boat:80 #bola:65 #borr:28 #both:51 #bott:43
#boug:143 #brab:-35 #brak:31 #bran:-27 #buck:37 #budd:-27 #buel:-41 #bugg:76 #buil:-41 #burn:28 #busi:-32 #caba:46
#cabo:-34 #cada:-49 #call:-31 #camb:30 #came:60 #camp:45 #cane:49 #cani:-32 #cans:55 #cant:-66 #carc:35 #card:-41
#care:-50 #carg:-30 #caro:30 #carr:-29 #cars:-38 #cash:58 #casi:-27 #caug:37 #caus:50 #ccid:97 #ccio:-25 #ceiv:-28
#cele:35 #cesi:-26 #chac:-37 #cham:-29 #chan:46 #char:61 #chat:95 #chea:-39 #chec:-54 #chic:25 #chil:-50 #choc:40
#cibo:-53 #cide:45 #cien:-35 #cino:26 #cito:-38 #ciud:32 #cked:66 #cket:-34 #clav:-25 #cobr:-48 #cogi:28 #coll:39
#comi:-55 #comp:115 #conc:-35 #conf:-43 #cono:-75 #cord:78 #corr:58 #coup:42 #crap:74 #cros:44 #ctic:29 #ctur:41
#cual:25 #cuan:71 #cuen:45 #culo:63 #damo:26 #dash:-25 #davi:-33 #dead:-78 #debo:-40 #deer:36 #deja:-51 #dejo:-37
#dele:36 #deme:-41 #dent:83 #dere:47 #desc:29 #desd:37 #desh:109 #desk:25 #desp:26 #dezc:-40 #dias:-27 #dida:-25
#didn:28 #died:-88 #dies:86 #diff:46 #diga:40 #digo:-32 #dije:26 #dime:-57 #dimo:144 #dios:-31 #disp:25 #divo:73
#dles:-50 #does:-45 #doll:-52 #dona:52 #done:-169 #driv:37 #drov:49 #dson:62 #duen:90 #dura:52 #duro:26 #eaci:-27
#eady:-25 #eale:26 #eape:-29 #easi:-27 #eate:-42 #eath:-47 #ecan:-32 #ecar:-48 #ecci:-25 #ecei:-28 #eces:-25
#ecib:-57 #ecid:-51 #ecie:-32 #ecin:26 #ecir:41 #ecit:-38 #ecke:37 #ecti:-45 #eded:51 #eden:-29 #edio:-25 #eede:51
#eein:29 #eeke:25 #eeks:-47 #eepi:-40 #efor:-36 #egar:-54 #egre:80 #egun:-33 #egur:42 #ehic:50 #eing:26 #eith:42
#eive:-28 #ejam:-25 #ejit:31 #eken:25 #elet:36 #elev:34 #ella:52 #elli:-47 #else:41 #emal:55 #emba:33 #emen:28
#enan:28 #enda:-34 #endi:172 #ends:-30 #enem:38 #enen:-34 #ener:38 #engo:-98 #enin:38 #enos:-62 #ensa:-95 #ense:64
#enta:50 #ente:-38 #entr:33 #epai:35 #epin:-40 #epos:55 #equi:-37 #eral:30 #erdi:111 #erdo:-31 #erec:-42 #ered:52
#eres:32 #erio:-47 #erro:39 #erso:-47 #erto:-60 #esad:30 #esca:45 #esde:37 #esel:88 #esit:-26 #esnt:-26 #esol:-38
#espo:-58 #espu:27 #essi:48 #este:-107 #esto:-52 #estr:57 #etal:55 #etos:-29 #evec:-38 #even:40 #ever:-31 #eway:45
#exas:89 #exis:40 #ezco:-40 #fact:41 #fall:-37 #fell:143 #fere:46 #ffer:30 #ffic:-32 #find:27 #fine:-37 #fire:55
#firm:46 #fixe:-27 #fixi:61 #flat:50 #flee:28 #floo:138 #fore:-36 #forg:-38 #forw:-26 #foun:85 #four:-46 #frai:57
#free:-41 #fren:-44 #frid:-33 #from:29 #fron:26 #fume:-26 #gamo:82 #ganc:47 #gara:-40 #gast:-53 #gend:-37 #girl:41
#givi:-35 #gles:38 #goin:-44 #gone:206 #good:32 #grad:-47 #gran:67 #grea:42 #gret:96 #guag:27 #guat:55 #gues:26
#guie:-28 #guno:27 #gunt:-33 #guro:45 #hach:-37 #haga:-31 #hall:39 #hand:-39 #hang:28 #happ:26 #hari:50 #hasn:-26
#hast:-65 #hata:95 #hatc:72 #haul:69 #have:85 #head:-27 #heap:-39 #heav:56 #heca:-48 #hech:31 #heel:-34 #here:-66
#hice:62 #hicu:68 #hija:33 #hijo:45 #hile:-26 #hill:-64 #hing:27 #hist:80 #hite:26 #hizo:-46 #hoca:62 #hole:-73
#hond:63 #hopp:29 #hora:27 #hori:-51 #houl:58 #hout:-31 #hree:-33 #hurr:49 #iamo:38 #ican:49 #icia:42 #icul:63
#iday:-32 #idea:66 #ided:-52 #iden:95 #idnt:28 #ieja:-31 #ieji:31 #iemp:35 #ient:-42 #iere:-31 #ierr:27 #iert:-29
#iese:88 #ifes:-35 #iffe:46 #igam:28 #ight:-36 #igle:38 #ildi:-30 #iled:25 #iles:65 #illa:31 #ille:-26 #imes:29
#imos:121 #incl:-28 #inea:-37 #ines:-25 #inio:-38 #iniv:48 #insp:-72 #inst:-33 #insu:40 #inte:36 #into:-90 #inve:-35
#iqui:30 #ires:-45 #irme:51 #irpo:-33 #isar:54 #ishe:29 #isie:37 #ismo:-28 #iste:28 #istl:-29 #isto:128 #itch:-29
#ithe:42 #iuda:32 #ivan:48 #iver:45 #ives:49 #ivew:38 #ivoc:-36 #ivor:73 #ixed:-37 #ixin:61 #jack:38 #jaja:98
#janu:-33 #jeje:42 #jito:31 #jobs:35 #june:-39 #juni:59 #junk:103 #kend:25 #kept:63 #keys:25 #kids:-57 #king:-27
#know:43 #kyar:37 #lado:-46 #ladr:83 #laje:33 #lake:41 #lamb:-38 #lame:-29 #land:-27 #laro:-62 #lars:-52 #last:85
#lava:-40 #lbox:-34 #ldin:-30 #leas:-27 #leav:-67 #leci:-39 #leet:28 #lega:-36 #lege:39 #leme:41 #lemo:165 #lers:-29
#lesi:38 #less:53 #lete:34 #lets:-28 #leva:-43 #levo:44 #lgui:-28 #lici:42 #limp:-25 #line:-33 #ling:-66 #liqu:30
#lite:36 #lito:-35 #live:50 #lkin:-40 #llaj:33 #llam:-29 #llar:-52 #llas:54 #llec:-39 #lled:103 #ller:-93 #llin:-51
#lmos:-34 #long:153 #lood:156 #loss:70 #lost:60 #lote:32 #lrea:-25 #lses:59 #ltar:28 #lube:-35 #lueg:-31 #lune:-36
#made:69 #make:-61 #mano:46 #manu:43 #marc:33 #mark:62 #mart:-48 #mate:62 #mbar:75 #mber:-79 #mbie:-60 #mbio:54
#meca:-32 #medi:-48 #meet:35 #meno:-33 #ment:84 #mero:-63 #meta:55 #migh:-37 #mile:46 #mill:39 #mine:83 #mini:48
#mism:-28 #mmat:42 #mmer:26 #mobi:26 #mode:-35 #mome:-30 #moms:28 #mone:-44 #more:193 #most:-34 #moto:112 #mous:-40
#movi:26 #mper:44 #mple:29 #mpra:83 #much:-53 #muda:35 #muer:-39 #muri:-47 #must:-27 #naro:-25 #nate:43 #nche:47
#ncie:-29 #nclu:-28 #ndan:-40 #nded:147 #ndem:-38 #ndie:-54 #ndim:62 #ndle:-53 #ndso:62 #ndur:63 #neac:-27 #need:-43
#neit:49 #nejo:51 #nemo:38 #nero:43 #nfia:-36 #ngan:39 #nger:118 #nico:-32 #nigh:34 #ning:34 #nion:-38 #nish:29
#niva:48 #nkya:37 #noma:-45 #nora:44 #nozc:-75 #nsar:-97 #nspe:-72 #nste:-34 #nsur:40 #ntad:40 #ntas:33 #nten:-34
#nter:32 #ntes:-30 #ntil:-28 #ntre:56 #nuar:-33 #nuda:40 #nuev:-80 #numb:-62 #nume:-63 #nurs:41 #nver:-33 #nymo:74
#obar:68 #obil:26 #oble:-43 #obra:-43 #ocad:-36 #ocar:57 #ocke:-33 #ocup:-37 #odav:-33 #oesn:-26 #ohio:44 #oing:-46
#olen:95 #olic:64 #olla:-52 #olle:26 #omas:-45 #omen:-30 #omma:42 #ompl:36 #ompr:122 #ompu:-45 #onad:33 #onan:-27
#onat:46 #ondu:63 #oner:-25 #ones:33 #onfi:-43 #onge:106 #onke:-40 #only:-37 #onoz:-75 #ools:-31 #oomm:42 #oors:33
#oose:38 #opin:-38 #oppi:29 #oqui:34 #oras:45 #orci:60 #orde:52 #ords:36 #orge:-28 #orit:-29 #orme:38 #orra:90
#orre:-28 #orwa:-26 #osed:25 #osse:103 #oste:-25 #otal:78 #otat:52 #otor:33 #otro:85 #otto:43 #ough:76 #ould:37
#ound:75 #ouse:-46 #oute:-42 #over:-47 #owed:60 #owne:36 #owns:113 #ozco:-75 #pago:34 #paid:90 #parr:29 #part:60
#pasa:-37 #pase:42 #paso:73 #pass:95 #paym:36 #pdat:55 #peac:69 #pecc:-27 #pect:-57 #peda:42 #pena:-60 #pens:-47
#perd:80 #pers:-57 #ping:-67 #pini:-38 #plat:34 #plet:36 #poca:26 #pole:37 #poli:64 #pose:25 #poso:-37 #poss:126
#post:-25 #pped:120 #prac:29 #prar:35 #preg:-33 #pren:-35 #pril:-36 #prin:44 #prob:-43 #pron:-34 #publ:30 #pued:-78
#puse:44 #putt:-38 #qued:82 #quic:-34 #quid:30 #quie:-34 #quis:-30 #quit:35 #quiv:-36 #raba:-57 #raci:-28 #ract:75
#rade:68 #radi:45 #raff:-37 #rage:-51 #raid:57 #raig:42 #raje:33 #rake:31 #rall:36 #ranc:40 #rapp:76 #rapy:97
#raro:56 #rash:-50 #rato:26 #rcio:60 #rdon:-31 #read:-45 #real:-46 #reat:41 #rece:-55 #rech:-29 #reci:-67 #reck:54
#reco:31 #rect:-32 #rega:46 #regr:80 #regu:-28 #rely:-48 #rend:36 #repo:153 #resa:-35 #reso:-67 #ress:-27 #rest:120
#reti:-34 #rget:-28 #ribe:32 #rica:49 #rida:-46 #ride:-54 #rike:29 #rita:-29 #rite:101 #rive:50 #rked:-50 #rket:66
#rkin:59 #rmen:39 #roba:68 #robl:-43 #robo:-34 #roma:30 #rone:58 #rong:-54 #room:42 #ross:44 #rota:84 #rote:59
#roug:-32 #rout:-42 #rove:48 #rows:-25 #rque:-25 #rral:59 #rrec:-32 #rren:54 #rson:-47 #rted:86 #rtes:-27 #runk:29
#runs:-39 #rush:109 #rwar:-26 #sabe:-48 #sabr:46 #sada:-25 #said:58 #sale:41 #sali:60 #same:-52 #saqu:25 #says:-91
#scan:55 #scra:75 #seei:29 #seen:-28 #segu:36 #self:-34 #sell:-82 #seme:-29 #sess:75 #sher:69 #shin:26 #ship:-35
#shou:34 #sick:-27 #sies:51 #sing:-33 #sion:34 #sito:-25 #sitt:28 #sola:-27 #sold:172 #solo:-38 #solv:-33 #some:35
#sona:-37 #soon:-40 #sorr:26 #soun:-26 #spec:-72 #spit:-33 #spos:-33 #spri:43 #spue:27 #squi:-30 #ssed:48 #sses:126
#ssio:46 #stan:-35 #stea:-37 #sted:-27 #ster:53 #stic:-34 #stil:-31 #stle:-29 #stol:141 #stop:-39 #stor:169 #stoy:-26
#stri:29 #stru:30 #stuf:-36 #summ:29 #sund:28 #sura:51 #swap:83 #taci:43 #tado:33 #take:-66 #tale:137 #tard:-30
#tarl:-26 #taro:35 #tarr:95 #tati:34 #taxi:58 #tche:41 #tead:-34 #tell:-28 #tema:40 #teng:-128 #tere:32 #teri:-33
#ters:-37 #tery:-42 #texa:89 #that:110 #them:30 #thin:40 #this:-25 #thre:-41 #tice:29 #till:-61 #time:-84 #tira:-32
#tire:-56 #tmen:26 #toda:-59 #tole:113 #tomo:29 #took:136 #tore:-27 #torm:38 #tory:118 #tota:78 #towe:60 #trac:46
#trad:157 #traf:-32 #trai:66 #tras:34 #tree:73 #treg:56 #trel:29 #trik:29 #tter:-33 #ttom:43 #tumb:42 #turb:-29
#ture:64 #turn:-37 #tuvo:31 #twic:-41 #uagu:27 #uand:52 #uary:-43 #uate:55 #ubli:30 #ucha:-37 #ucti:36 #udad:32
#udam:36 #uddy:-27 #udge:33 #uebl:-57 #uede:-50 #uedo:66 #uego:-31 #uele:-30 #ueno:90 #uent:44 #uera:-27 #uert:-43
#uesd:31 #uess:26 #ueva:67 #ueve:-64 #uevo:-109 #ught:130 #uick:-34 #uido:32 #uien:-28 #uier:-36 #uild:-30 #uinc:29
#uite:30 #uivo:-36 #uled:105 #umba:42 #umbe:-62 #umer:-63 #umes:-26 #umme:29 #unda:38 #unde:56 #unes:-36 #unge:-26
#unio:59 #unki:71 #unky:37 #unos:-29 #unti:-28 #upda:55 #uran:37 #uras:63 #urio:-47 #urre:63 #urse:34 #usad:-37
#ushe:88 #ushi:41 #usin:-33 #uste:52 #utom:65 #vado:-25 #vale:-47 #vamo:-45 #vehi:50 #vend:130 #vent:62 #vers:-34
#vert:-31 #very:-30 #vewa:38 #vida:57 #vien:-28 #vier:-35 #ving:-39 #visa:53 #vive:30 #voca:-36 #vorc:73 #vuel:-39
#wago:40 #walk:-47 #want:-56 #wapp:58 #ward:-26 #watc:28 #ways:47 #week:-43 #went:133 #were:-57 #whee:-34 #when:-83
#whil:-26 #whis:-29 #whit:26 #whol:-45 #wice:-41 #wife:-59 #will:-38 #wish:-35 #wned:70 #wner:54 #worr:-37 #woul:-37
#wrap:37 #wrec:54 #writ:140 #wron:-54 #wrot:59 #xing:61 #xist:40 #xtin:33 #yard:165 #ymen:36 #ymor:74 #yone:-48
#yonk:-26 %again_later:-107 %again_later%agree:-95 %again_later%bad:-38 %again_later%car:-47
%again_later%car_part:-27 %again_later%doubt:-70 %again_later%elsewhere:70 %again_later%fails:29
%again_later%gone_car:78 %again_later%how_long:-34 %again_later%money:-26 %again_later%pay_day:-37
%again_later%phone:-27 %again_later%place:-44 %again_later%refuse:-75 %again_later%shift_it:75 %again_later%staff:26
%again_later%start_again:29 %again_later%thanks:52 %again_later%who:-37 %agree:-45 %agree%away:-37 %agree%busy:-26
%agree%fails:64 %agree%family:-59 %agree%how_long:-63 %agree%leak:35 %agree%money:36 %agree%odometer:-29
%agree%on_way:-44 %agree%pay_day:50 %agree%place:44 %agree%question:-25 %agree%refuse:66 %agree%season:49
%agree%smoke_smell:-45 %agree%wrong_one:88 %away%call_off:-39 %away%car:78 %away%car_part:-28 %away%do_it:-33
%away%family:57 %away%meaning:-31 %away%odometer:-29 %away%opening:32 %away%pay_day:34 %away%place:-28
%away%question:-40 %away%refuse:-32 %away%season:-29 %away%staff:-29 %away%wrong_one:40 %bad:-60 %bad%gone_car:26
%bad%money:-45 %bad%shift_it:-34 %bad%wrong_one:-26 %bring:-57 %bring%call_off:-36 %bring%car:56 %bring%car_part:-39
%bring%do_it:-45 %bring%elsewhere:98 %bring%fails:60 %bring%family:-39 %bring%gone_car:96 %bring%leak:30
%bring%leave_me:65 %bring%meaning:-38 %bring%message:32 %bring%money:-50 %bring%on_way:-86 %bring%opening:33
%bring%place:-60 %bring%question:-101 %bring%refuse:41 %bring%shift_it:53 %bring%smoke_smell:-42 %bring%thanks:-25
%busy:-50 %busy%call_off:-29 %busy%do_it:72 %busy%fails:-35 %busy%family:-40 %busy%odometer:-26 %busy%who:34
%call_off:67 %call_off%car:235 %call_off%car_part:-142 %call_off%do_it:-154 %call_off%elsewhere:73
%call_off%fails:-87 %call_off%gone_car:100 %call_off%how_long:-45 %call_off%leave_me:69 %call_off%machine:-26
%call_off%noise:-93 %call_off%odometer:63 %call_off%on_way:-42 %call_off%opening:39 %call_off%pay_day:-25
%call_off%phone:-61 %call_off%place:-71 %call_off%question:-44 %call_off%refuse:-64 %call_off%smoke_smell:-30
%call_off%staff:120 %call_off%who:-47 %call_off%wrong_one:76 %car:199 %car%do_it:38 %car%doubt:-47 %car%fails:-69
%car%family:54 %car%gone_car:187 %car%leave_me:152 %car%message:126 %car%money:35 %car%on_way:107 %car%pay_day:-41
%car%phone:-66 %car%place:-69 %car%shift_it:171 %car%smoke_smell:-38 %car%staff:-45 %car%thanks:38 %car%who:44
%car%wrong_one:-31 %car_part:-110 %car_part%do_it:36 %car_part%doubt:70 %car_part%fails:-50 %car_part%family:-25
%car_part%lift:29 %car_part%money:39 %car_part%odometer:-45 %car_part%phone:34 %car_part%refuse:47
%car_part%season:-32 %car_part%staff:79 %car_part%wrong_one:-85 %do_it:-97 %do_it%elsewhere:-39 %do_it%family:-103
%do_it%gone_car:-65 %do_it%how_long:71 %do_it%leak:33 %do_it%message:-46 %do_it%money:58 %do_it%on_way:45
%do_it%pay_day:-44 %do_it%question:42 %do_it%refuse:47 %do_it%start_again:46 %do_it%who:36 %doubt:-59
%doubt%gone_car:-69 %doubt%message:44 %doubt%on_way:-34 %doubt%shift_it:-58 %doubt%staff:43 %elsewhere:-46
%elsewhere%family:25 %elsewhere%gone_car:120 %elsewhere%how_long:-40 %elsewhere%leak:31 %elsewhere%meaning:-29
%elsewhere%odometer:-31 %elsewhere%on_way:32 %elsewhere%phone:-64 %elsewhere%question:-96 %elsewhere%refuse:72
%elsewhere%shift_it:100 %elsewhere%start_again:-35 %elsewhere%thanks:25 %elsewhere%who:48 %elsewhere%wrong_one:-65
%fails:-73 %fails%gone_car:-32 %fails%leak:-36 %fails%leave_me:68 %fails%money:34 %fails%odometer:68
%fails%pay_day:57 %fails%place:-43 %fails%question:36 %fails%shift_it:-26 %fails%start_again:-31 %family:121
%family%gone_car:33 %family%how_long:-60 %family%leave_me:81 %family%message:-26 %family%odometer:70
%family%place:-30 %family%question:28 %family%season:-31 %family%thanks:-49 %family%wrong_one:41 %gone_car:491
%gone_car%leave_me:55 %gone_car%lift:34 %gone_car%machine:-49 %gone_car%meaning:-47 %gone_car%message:84
%gone_car%money:-27 %gone_car%noise:-50 %gone_car%odometer:-50 %gone_car%on_way:-87 %gone_car%opening:54
%gone_car%pay_day:-38 %gone_car%phone:28 %gone_car%place:61 %gone_car%question:115 %gone_car%refuse:98
%gone_car%season:122 %gone_car%shift_it:57 %gone_car%smoke_smell:-67 %gone_car%start_again:53 %gone_car%thanks:119
%gone_car%wrong_one:-31 %how_long:-39 %how_long%leak:30 %how_long%money:-34 %how_long%question:-68
%how_long%refuse:55 %how_long%shift_it:-54 %leak:-37 %leak%refuse:60 %leak%staff:36 %leak%wrong_one:46
%leave_me%money:30 %leave_me%odometer:60 %leave_me%phone:-26 %leave_me%question:-56 %leave_me%refuse:-27
%leave_me%season:-31 %leave_me%smoke_smell:35 %lift%money:29 %lift%question:48 %lift%refuse:-37 %machine:-48
%meaning:-79 %meaning%season:-27 %meaning%wrong_one:-25 %message%refuse:-46 %message%shift_it:78 %message%staff:40
%message%who:-25 %money%odometer:-34 %money%on_way:-41 %money%pay_day:60 %money%place:45 %money%question:-36
%money%staff:-88 %money%start_again:68 %money%wrong_one:41 %noise:-151 %noise%refuse:-81 %noise%wrong_one:-63
%odometer:25 %odometer%on_way:-37 %odometer%pay_day:30 %odometer%question:30 %odometer%refuse:31
%odometer%start_again:29 %odometer%who:40 %on_way%question:-74 %on_way%refuse:25 %on_way%who:29 %on_way%wrong_one:-44
%opening%staff:34 %opening%wrong_one:26 %pay_day:27 %pay_day%shift_it:-42 %pay_day%staff:-30 %pay_day%who:27
%pay_day%wrong_one:-70 %phone:-149 %phone%season:-42 %phone%staff:-61 %phone%wrong_one:-36 %place%question:-64
%place%refuse:-44 %place%staff:-25 %place%who:-25 %place%wrong_one:-34 %question:-58 %question%staff:-48
%question%thanks:-29 %question%wrong_one:-43 %refuse%season:-79 %refuse%shift_it:49 %refuse%staff:-37 %season:50
%season%shift_it:-32 %season%smoke_smell:66 %season%staff:64 %season%wrong_one:-29 %shake:-58 %shift_it:-38
%shift_it%staff:-34 %shift_it%start_again:-31 %shift_it%thanks:27 %shift_it%who:-29 %shift_it%wrong_one:94
%smoke_smell%staff:32 %smoke_smell%wrong_one:34 %staff%thanks:30 %staff%wrong_one:81 %thanks%wrong_one:51 %who:96
%who%wrong_one:-29 %wrong_one:73 @?:-164 @after_visit:-134 @car:-64 @confirm:-97 @day:-34 @later:-79 @odometer:73
@offers:-70 @reading:-184 @time:-63 @times:-48 @walk_in:-51 ^_a:-47 ^_about:-52 ^_ahorita:-51 ^_ando:32 ^_ayer:40
^_bank:127 ^_blue:39 ^_both:43 ^_bring:-38 ^_bus:-40 ^_cambie:-28 ^_can:-74 ^_car:-55 ^_claro:-29 ^_con:32
^_correct:-32 ^_could:-34 ^_couldnt:28 ^_cual:25 ^_cuando:-27 ^_cuanto:-50 ^_desde:45 ^_do:-148 ^_donated:43 ^_el:94
^_en:-26 ^_end:-31 ^_es:-32 ^_ese:-110 ^_eso:-25 ^_esta:-25 ^_este:-60 ^_found:-36 ^_fyi:58 ^_got:-67 ^_hace:51
^_hasta:-28 ^_hold:-25 ^_how:-45 ^_im:-66 ^_in:-62 ^_is:-84 ^_it:40 ^_jajaja:-39 ^_joven:33 ^_just:-34 ^_la:32
^_las:-30 ^_last:-57 ^_le:25 ^_lease:55 ^_lo:216 ^_los:91 ^_me:62 ^_mejor:-56 ^_might:-37 ^_need:-27 ^_neither:65
^_new:-33 ^_ninguno:30 ^_no:-196 ^_not:-61 ^_oh:36 ^_one:-33 ^_opt:-33 ^_please:-31 ^_por:-84 ^_puedo:-33 ^_quedo:83
^_quit:-35 ^_scrap:-41 ^_se:83 ^_sedan:-25 ^_she:55 ^_shes:81 ^_should:28 ^_so:-40 ^_sold:-188 ^_somebody:54
^_something:-31 ^_soy:-34 ^_take:-59 ^_tengo:-41 ^_that:44 ^_the:-57 ^_this:-55 ^_tomorrows:-25 ^_took:-56 ^_trade:48
^_traded:104 ^_truck:-25 ^_turned:43 ^_two:55 ^_un:32 ^_unsubscribe:-67 ^_ustedes:-48 ^_vengo:31 ^_was:-33 ^_were:-46
^_what:-57 ^_when:-45 ^_will:-40 ^_would:-55 ^_yes:29 ^_yo:-57 ^_you:-98 ^_your:-36 a:84 a__and:-64 a__asi:-38
a__car:38 a__en:54 a__esposo:-27 a__home:62 a__i:52 a__iglesia:50 a__is:-41 a__later:34 a__like:-25 a__lo:-29
a__lol:-43 a__no:97 a__now:163 a__off:43 a__persona:-29 a__por:35 a__since:-27 a_boat:96 a_bus:49 a_car:-112
a_different:51 a_hundred:-41 a_la:107 a_las:-37 a_little:-26 a_los:-57 a_mi:57 a_month:-37 a_mouse:-40 a_new:69
a_otra:-36 a_otro:-48 a_pickup:31 a_que:-30 a_su:-27 a_tener:-25 a_una:26 about_to:-44 acaba:59 acaba_de:59 acabo:-34
accident:97 across:69 afraid:57 after_i:-25 after_the:37 agencia_$:34 agendeme:-38 agendeme_$:-38 agradezco:-40
ahi:26 ahi_lo:-33 ahorita:-51 ahorita_no:-51 aint:-33 aire:-32 airport:-33 airport_$:-33 al:116 al__dia:25
al_pobre:-49 algo:-29 alguien:-28 alguien_que:-28 alineacion:-27 all:-61 all_$:40 all_of:-38 almost:-34 already:-25
already_$:-26 am:-25 an__change:38 an_oil:38 and:36 and__car:-41 and__it:124 and__the:-27 and__was:50 and__will:35
and_a:-40 and_all:49 and_lost:85 and_never:41 and_now:-28 and_that:28 and_the:-26 and_we:25 and_what:49 anda:82
anda_en:59 ano:46 ano_$:48 anoche:43 anoche_$:-29 antes:-26 any:31 any_more:89 anymore:74 aparecio:27 aparecio_$:27
appointment_$:59 appointment_i:-35 april:-36 are:-34 army:52 around:-29 arreglar:37 as:-32 as_a:-28 as_it:30
as_the:-28 asi:64 asi_que:40 ask:-49 ask__in:-52 ask_me:-34 at_$:31 at__of:59 at_it:26 at_my:-26 at_now:-38 at_the:43
at_work:-26 auto:58 avisar:30 avisar_que:30 away:51 ayer_$:-51 ayer_en:-44 azul_ya:45 b:45 back:33 back_at:59
back_to:39 baja:69 banco:40 bank:162 bank__it:82 barely:-48 base:-49 be:-56 beat:-25 beat__to:-26 beat_you:-26
beater:-41 been:29 been_done:-39 been_sold:63 beer:-27 before:-36 belongs__a:30 bici:-26 bien:29 bless:65 block:28
blue_$:-26 blue_one:55 boat:48 book:-30 book_me:-58 both:112 both_$:32 both__so:79 bother:-60 bottom:43 bought:143
bought_it:157 brakes:49 brand:-30 brand_new:-30 bring:-40 bring_it:-35 brother:31 bucks:37 bucks_and:34 buddy:-27
building:-30 bus:-27 but:36 but__to:-34 but__you:53 but_do:53 but_i:36 buy__cars:-70 by:-64 by_$:-28 by_a:32
by_you:-34 bye:90 cae:-25 calle:-25 cambie:-44 cambie__opinion:-39 cambie__una:62 cambie_por:94 cambio:54 came:60
camioneta_blanca:-26 can:-62 can__in:25 can__me:31 can_come:25 can_i:-71 can_my:-44 cancel_me:26 cancele_$:42
cant:-66 cant__it:-95 cant__tomorrow:30 cant_do:-38 car:138 car_$:-98 car__gone:81 car__i:62 car__to:51 car__you:-26
car_and:70 car_at:-26 car_for:28 car_is:155 card:-42 care:-34 care_$:48 care__it:-66 care_of:-72 carro:-31
carro_$:-30 carro__los:-57 carro_de:46 carro_ni:-51 carro_no:-31 carro_tengo:26 carro_ya:97 cars:-38 cars_$:-62
casa_el:27 cash:58 casi:-27 caught:37 caught_fire:40 cause:39 cel:-53 changes:32 chatarra:58 chatarra_$:58
cheaper:-29 check:27 check_your:-26 checked:-27 cheque_$:35 chocaron:62 chocaron_y:62 choco_su:-33 cita_$:33
ciudad:32 claro:-29 college:39 come:25 come__friday:25 coming:-41 coming_$:-40 como_esta:-38 como_lo:36 compa:26
compre:30 con__y:58 con_la:-32 con_los:34 con_mi:27 con_otro:30 con_que:-29 con_todo:36 conozco:-75 conozco_$:-51
correct:-32 could__the:35 couldnt:31 cual:25 cuando:52 cuando_me:68 cuando_se:25 cuantas:46 cuanto:-27 cuanto__por:27
cuanto_es:-38 cuanto_por:26 cuenta:29 cut:-28 date:-61 date_$:-61 daughter__it:31 daughters:-28 day:-27 day_after:25
day_please:-37 days:30 days_$:63 de__al:38 de__de:-27 de__del:-27 de__el:46 de__en:30 de__hermano:-29 de__hija:32
de__jaja:37 de__lista:40 de__que:-42 de_ahi:59 de_baja:74 de_el:34 de_ese:-37 de_eso:28 de_los:29 de_mi:-40
de_nuevo:-38 de_opinion:-39 de_textearme:41 de_una:-25 dead:-78 dealer:61 dealer__it:34 debo:-40 decided:-52 decir:41
decir_$:33 deer:36 dejaron__carro:-33 dejaron_el:-32 dejo:-37 del:50 delete:36 delete__number:36 delete_my:36 den:-27
den_de:35 descanse:63 desde:37 desk:25 despues:26 despues_$:44 di:137 di__mi:52 di_a:81 di_de:48 dia:-55 dia_$:-31
dias:-27 diciembre_$:41 did:-79 did__brakes:32 did_it:-83 did_the:28 didnt:28 died:-88 died__the:-53 died_on:-46
dieron:51 different:46 digame:28 digame__es:40 digame_que:40 dije:27 dije_que:26 dime:-57 dime_el:-29 dio:32 dios:-31
divorcio:60 do:-52 do__buy:-47 do__keep:26 do__work:76 do_it:-60 do_the:-25 do_you:73 does__write:35 does_it:-39
does_nobody:41 doesnt:-26 dollars:-52 donated:55 done:-170 done_$:-52 done_at:-25 done_in:-48 done_last:-49
dont__a:-159 dont__any:-38 dont__it:99 dont__me:-44 dont__that:149 dont__the:73 dont__to:-26 dont_drive:27
dont_have:153 dont_know:-37 dont_own:94 dont_text:-33 dont_think:-39 dont_want:-48 doors:33 dos:76 dos_horas:52
down_$:30 drive:-49 drive_it:-59 driver:37 driveway:38 driveway_$:-35 driving_it:-30 drop__appointment:29 drop_it:-32
drove:49 dueno:90 dueno_$:73 duro:26 el:61 el__carro:-39 el__ese:60 el__fue:33 el__lo:49 el__me:40 el__mes:-35
el__ni:69 el__no:-29 el__pasado:47 el__paso:41 el__se:25 el__y:43 el__ya:-45 el_cheque:35 el_despues:45 el_dia:-30
el_lunes:-33 el_martes:-26 el_mismo:-28 el_numero:-29 el_que:31 el_recibo:-53 el_seguro:95 el_total:-69 el_verano:26
eleven:34 else_$:-40 elses:59 en:136 en__de:46 en__el:28 en__parte:-50 en__que:-38 en__se:45 en__taller:-41 en__y:30
en_dos:34 en_el:44 en_enero:61 en_febrero:25 en_la:-95 en_mi:-39 en_otra:-54 en_paz:40 en_una:33 end_of:44 ended:99
ends:-30 enero:62 enero_$:81 equivocada:-34 es:37 es__de:32 es__el:-30 es__eso:-33 es__la:45 es__mismo:-27 es__ya:47
es_el:-78 es_eso:33 es_mio:118 es_que:34 es_un:-36 esa:93 escribe:39 escribe_$:39 ese:154 ese_$:77 ese__lo:150
ese_carro:91 ese_dia:-35 ese_senor:-44 ese_ya:93 eso:-34 eso_$:-27 eso__lo:-46 eso_de:32 eso_me:-37 esposo:-37
esta_$:-41 esta__el:55 esta_en:61 estan:-35 estan_$:-34 este:-92 este__ya:-43 este_numero:-71 estoy:-26 even:-31
evening:37 evening_$:42 ex:215 ex__the:135 existe:40 far:-30 favor_$:-35 fell:81 fellas:55 fierro:27 fierro_$:27
find:29 fine:-37 fine_$:-54 fire:54 firme:65 fix:49 fixed:-27 fixing:61 fleet:28 for_$:73 for__car:-49 for__day:-36
for__oil:28 for__so:29 for_a:100 for_an:29 for_good:33 for_me:-35 for_now:-90 for_that:-63 for_the:-64 for_two:38
forget:-28 forward:-26 found:85 found_a:49 four:-46 free:-50 frenos:-31 friday:-34 from:29 from_me:69 front:26
front_desk:37 fue:159 fumes:-26 fyi:66 garage:-29 gasolina_$:38 gasto:-27 gave__to:71 gave_it:72 gave_me:-40
gave_the:31 gave_you:-54 get:-54 give:29 giving:-35 go__it:-32 go_for:-32 go_to:63 going:-44 going_to:-28 gone:206
good__you:29 got:83 got__done:-57 got__in:36 got__new:-30 got__of:189 got_in:-28 got_it:-66 got_rid:160 got_stolen:54
got_to:-62 got_totaled:65 grandson:62 great:42 guagua:27 guatemala:55 guess:26 guy:-41 hace:60 hace__que:38
hace_un:25 hacer:-34 hacer_$:-25 had:-29 had__done:-32 had_it:-76 had_that:64 had_to:79 handles:-50 hands:-27
happy:34 has__car:-34 has__now:85 has_a:29 has_it:32 has_the:-32 hasnt:-26 hasta:-65 hasta_que:-28 hauled:105
have__back:-28 have__car:45 have__new:38 have__no:48 have_a:-89 have_it:61 have_never:-36 have_someone:-50
have_that:75 have_the:132 have_time:-48 havent:76 hay__que:39 he:-51 hecho:31 her:-48 her_$:51 here:-40 hes:37
hijo:46 him_$:38 history:85 hit:72 hizo:-46 hizo_mi:-68 home_$:64 honduras:63 horas:45 horas_$:52 how:-37
how__longer:-28 i__bring:29 i__driving:25 i__have:33 i__it:44 i__my:27 i__never:-34 i__something:53 i__the:-57
i__to:-29 i_bought:-52 i_can:-30 i_cant:-37 i_changed:35 i_could:42 i_drive:50 i_got:-61 i_had:-62 i_have:-86
i_let:129 i_quit:34 i_should:43 i_sold:68 i_still:-37 i_think:31 i_took:-40 idea:66 idea_$:-27 if:26 if_i:-47
if_so:88 iglesia:38 iglesia_$:43 im:-85 im__with:-26 im_afraid:57 im_down:-26 im_not:-61 in:135 in_$:-45 in__back:-28
in__day:30 in__morning:-33 in__new:-25 in__other:36 in__summer:25 in__the:-26 in__weeks:-29 in__you:29 in_a:50
in_april:-25 in_friday:25 in_it:-53 in_january:-33 in_june:-39 in_march:40 in_ohio:44 in_spring:60 in_tuesday:-38
in_two:-29 inspeccion:-27 inspection:-45 instead:-34 instead_$:-32 insurance:40 insurance__it:33 interest:72
interested_$:-30 into:-90 into_the:-47 is:-51 is__a:-58 is__at:-33 is__my:-29 is__now:-45 is__of:58 is__sold:56
is__somebody:-27 is__with:38 is_a:35 is_at:61 is_been:44 is_fine:-54 is_gone:101 is_got:-32 is_it:-136 is_not:128
is_on:37 is_out:49 is_that:-30 is_the:-56 is_totaled:52 is_up:-40 it:267 it__a:99 it__after:51 it__at:31 it__been:43
it__dont:-44 it__for:34 it__friday:-48 it__got:-32 it__i:73 it__it:-62 it__like:-29 it__me:35 it__more:70
it__morning:37 it__my:-35 it__next:36 it__not:90 it__now:-26 it__on:-42 it__somebody:27 it__that:-33 it__the:46
it__to:139 it__totaled:85 it__under:-41 it__yesterday:45 it_anymore:40 it_back:80 it_be:-40 it_but:-40 it_can:-29
it_died:-53 it_done:-41 it_for:31 it_from:46 it_go:27 it_got:73 it_has:-30 it_in:67 it_last:150 it_no:30 it_now:155
it_off:62 it_on:50 it_out:81 it_so:-47 it_still:34 it_take:-25 it_the:29 it_this:37 it_to:57 it_under:43 it_up:-39
it_was:-56 it_went:78 it_with:-32 jaja:39 jajaja:81 jajaja_$:-39 january:-33 january_$:-29 jeje:42 jeje_$:46 jobs:35
june:-39 june__it:-39 junio:59 junk:-41 junkyard:37 just:-56 just__it:-45 just_a:48 k:-34 keep:27 kept:63 keys:25
keys__the:30 kid:27 kid__the:47 kids:-57 know:43 know_$:88 know__is:-33 know_it:-33 la:99 la__al:28 la__asi:-26
la__de:68 la__del:66 la__la:59 la__lo:-29 la__no:-48 la__pero:65 la__por:69 la__que:-29 la__se:33 la_bici:-31
la_blanca:39 la_cita:25 la_ciudad:37 la_gasolina:38 la_grua:25 la_iglesia:44 la_inspeccion:-27 la_mano:-49
la_noche:-38 la_pena:-47 la_policia:42 la_senora:45 la_vendi:33 la_vez:-25 la_y:30 lado:-46 lado_$:-36 lake:41
las:-108 last:68 last_fall:41 last_month:81 later_$:34 law:46 law__it:-28 le:-42 le__a:-33 le_puedo:41 lease_is:-67
leave:-46 leave_it:-44 left_my:75 les__que:26 les_dije:26 let:50 let_me:-41 let_the:61 lets:-28 like:-74 liquido:32
liquido_$:33 literally:36 little_$:-26 llevar_a:-29 llevar_el:54 lleve__otro:-31 llevo:44 llevo_$:-57 llevo__grua:69
llevo_la:84 lo:224 lo__a:159 lo__ahi:29 lo__al:94 lo__con:-36 lo__de:56 lo__mi:52 lo__para:32 lo__por:132 lo__que:50
lo__si:-30 lo__un:33 lo__y:72 lo_agradezco:-40 lo_arreglo:-27 lo_cambiaron:-62 lo_cambie:-100 lo_cambio:48
lo_chocaron:42 lo_choque:29 lo_de:-41 lo_dejaron:-25 lo_deje:30 lo_dejo:-27 lo_di:93 lo_hice:-41 lo_hicieron:28
lo_hizo:-81 lo_mande:42 lo_mio:-29 lo_que:-90 lo_robaron:124 lo_tiene:110 lo_trae:-50 lo_vendi:167 lo_vendimos:59
lo_voy:-56 lol_$:33 longer:119 longer__it:30 longer__the:85 longer__to:-29 longer_own:58 los:34 los_$:-51 los__los:54
los__me:75 los__que:26 los_conozco:-51 los_dos:40 loss:70 lost:60 lot:55 lube:-35 luego:-31 lunes:-36 made:69
mailbox:-34 make:-42 make__to:-27 make_it:-34 mall:25 man:46 mandan:-26 mandaron:28 mandaron_a:28 mande:44
manden_$:-38 mando:-29 manejo:51 many_times:29 march:33 martes:-40 martes_$:-26 mas:32 mas__por:38 may_$:-33 me:-36
me__a:40 me__al:38 me__chocaron:31 me__con:-39 me__de:37 me__el:-41 me__hicieron:-45 me__in:33 me__it:-49
me__june:-37 me__la:-118 me__mas:38 me__of:51 me__por:-25 me__robaron:147 me__you:39 me_a:-28 me_about:37 me_again:40
me_and:-30 me_dejaron:31 me_dieron:50 me_i:29 me_in:-29 me_la:134 me_lo:75 me_manden:28 me_out:51 me_robaron:-108
me_that:33 me_the:-50 me_then:55 me_van:-25 mean_$:57 mecanico:-32 mechanic_$:35 mejor__y:38 mejor_me:-39 menos:-31
mes:-26 mes_$:-35 messages_please:25 metal:55 mi:-28 mi__choco:-56 mi__el:-53 mi__en:-32 mi__lo:34 mi__me:32
mi__no:-27 mi__se:59 mi__y:30 mi_carro:-64 mi_cita:-37 mi_esposo:-37 mi_ex:57 mi_hermano:25 mi_hija:26 mi_hijo:49
mi_numero:49 mi_primo:-27 mi_vecino:32 might:-37 mil:51 miles:58 millaje:33 mine:77 mine_$:-64 minivan:48 mio:83
mis:-30 mismo:-28 moms:28 month_$:60 more:118 more_$:64 more__i:36 more__please:40 more_messages:25 motor:-26
mouse:-40 much_longer:-28 muchacho:-37 murio:-47 must:-27 my__and:-59 my__but:28 my__car:-30 my__done:-39 my__one:57
my__says:-48 my__the:-42 my_brother:31 my_car:-51 my_cousin:26 my_daughters:-28 my_driveway:40 my_ex:78
my_grandson:64 my_kid:-29 my_mom:33 my_new:58 my_number:36 need:-92 need__appointment:-40 need_the:-40 need_to:-40
needed:51 needs_a:37 needs_it:-28 neighbor__it:28 neither:49 new:123 new_one:161 new_ones:-28 new_year:-25
ni__conozco:-51 ni__tengo:26 ni_carro:26 ni_el:36 ni_lo:68 ni_los:-51 night:44 night_and:48 ninguno:27 no:-51
no_$:-269 no__carro:-72 no__con:54 no__de:-97 no__drives:25 no__el:-43 no__esa:75 no__ese:136 no__este:-25
no__have:48 no__it:70 no__lo:-32 no__manden:28 no__messages:25 no__mio:143 no__no:122 no__nomas:-29 no__own:58
no__por:36 no__puedo:47 no__tengo:25 no__the:39 no__with:47 no_car:99 no_el:-33 no_es:112 no_existe:40 no_hay:51
no_idea:60 no_le:29 no_lo:-93 no_longer:144 no_manden:-50 no_manejo:59 no_me:-63 no_more:75 no_no:37 no_puedo:-50
no_quiero:-26 no_se:-26 no_thanks:34 no_tiene:-33 no_voy:68 noche:-37 nomas:-45 nos:88 nos__a:36 not__it:-52
not__me:43 not__my:46 not__now:36 not_a:-55 not_happy:34 not_her:-36 not_in:34 not_interested:26 not_my:-39
not_the:-49 not_worth:32 now:149 now_$:79 now__it:36 now__the:-26 now_it:-26 now_the:-31 nueva:72 nueva_$:60
nuevo:-58 nuevo_$:-50 number:-62 number_$:26 number__it:-32 numero:-63 numero__no:-43 nunca_aparecio:27 nurse:41
o:-27 of:69 of__in:-38 of_mine:-55 of_that:-117 of_the:102 of_them:30 of_those:-30 of_you:46 off:108
off__appointment:35 off__the:61 off_the:-37 oh:33 ohio:44 oil:55 oil__on:29 oil_change:38 oil_changes:32 old:43
on:-63 on_$:-36 on__for:-25 on__it:-48 on__now:-37 on_a:31 on_it:-78 on_sunday:49 on_those:53 one:120 one_in:72
only:-37 only__the:28 only_have:32 opinion:-38 opt:-34 or:-49 or__it:-32 otra:-71 otra_$:54 otra_parte:-50
otra_persona:-29 otras:65 otro:85 otro_$:107 otro__el:32 otro__no:-30 otro_carro:52 otro_lado:-25 otro_mes:-35
otro_taller:-80 our:94 out:27 out_and:-33 out_last:-59 out_of:78 out_on:37 out_to:-26 over__weekend:26 over_the:25
own:98 own__car:-44 own_a:-43 own_it:106 own_that:90 owner:64 owns:91 pagos:30 paid:58 paid_$:65 para:74 para__con:48
parked:-50 parking:65 parking_lot:52 parte:-52 partes:30 pasada:-25 pasado:47 pasado_$:33 pasame:-40 pase:49 paso:73
paso_a:141 passed:77 past:-64 past_$:-63 pay:46 pay_for:46 paz:40 pena:-47 pense:50 perdi:135 perdida:-25
perdida_total:37 pero__no:-28 pero_digame:28 pero_no:-28 pero_si:48 persona:-37 phone__about:55 phone_anymore:-38
phone_me:56 pie:71 piezas:26 place:-44 plate:35 please_$:-56 please__me:35 please__my:95 pobre_$:56 poca:26
point_$:-31 pole:37 policia:42 por:169 por__en:36 por__que:32 por__y:38 por_ahora:-34 por_el:96 por_favor:-35
por_otro:41 por_perdida:-62 por_un:68 por_una:155 practice:29 problem:-43 problem_$:-43 pueden:-29 pueden__de:-30
puedo:-47 puedo__a:-33 puedo_llevar:-25 pues:-34 puro:27 puse:44 push:-28 push_it:-26 pushed:-26 pushing:44 put:-32
putting:-38 que__carro:33 que__eso:33 que__ni:47 que__tengo:30 que__vendi:41 que_cobran:-29 que_el:25 que_no:28
que_trae:32 que_ya:58 quedo:113 quedo__en:-59 quedo_con:26 quedo_mi:63 queria:30 quick:-34 quick_lube:-35
quien__lo:-30 quien_me:-31 quieren:-28 quiero__el:32 quit_it:-32 quit_texting:40 quitenme:34 quitenme__la:40
quitenme_de:30 ran:26 rato:43 rato_que:46 real:-26 receive:-28 receive_these:-27 recibo:-53 recien:-32 records:36
records_$:-36 regale:30 regrese:35 regrese__la:32 regreso:-29 remove_me:30 rest:74 rid:160 rid__the:55 rid_of:160
ride:-54 robaron:69 robaron_la:-59 robo:-34 roommate:42 rotated:40 round:31 route:-42 runs:-39 saber:-29
saber_cuanto:-29 said:58 sale:75 sali:33 saliendo:29 saliendo_del:32 saque:25 say:-58 say_it:-35 says:-91 says_$:-27
scrap:-41 scrapped:39 se:64 se__acaba:59 se__agradezco:-40 se__cambie:-93 se__con:62 se__di:44 se__hice:-26
se__llevo:111 se__por:35 se__quedo:48 se_fue:106 se_hizo:35 se_la:26 se_le:-30 se_lo:145 se_me:-50 se_murio:-29
se_quedo:-26 sea:-42 sedan:-39 sedan_is:-29 see__my:-27 see__then:-31 see_what:-27 see_you:-31 seeing:29 seen:-45
seguro:45 seguro_$:-30 sell:-33 selling:-47 senor:-44 senora:44 set:-32 set_$:-30 shes_a:88 ship:-30 shop:-36
shop_$:-31 shot:29 should:58 si__el:-32 si__no:-25 si__para:32 si__que:47 si_quiero:29 si_ya:49 sick:-27 siempre_$:60
sin:-44 since_$:32 sitting:27 sitting_at:37 sky:49 so:45 so__can:56 so__it:-39 so__my:56 so_no:-35 so_the:-44
so_thursday:84 so_yes:-34 so_you:59 sola:-27 sold:189 sold_$:-256 sold__car:93 sold__the:83 sold_both:48 sold_but:67
sold_her:44 sold_it:227 sold_that:80 sold_the:50 solo:-38 some:49 some_other:36 somebody__it:43 someone:31
someone_$:-71 someone__me:25 someone_else:-39 someone_elses:49 son_in:25 sorry:26 sound:-26 soy_la:-52 spring:43
state:-25 still:-31 still__it:-37 still_have:-37 stolen:95 stop:-35 story:33 straight:-25 strike:29 su:-71 summer:29
sunday:28 swap:25 swapped:58 take__off:55 take_it:-31 take_me:93 taken:-29 taller:-93 taller_$:-39 taller_de:-40
tax_$:-51 taxi:58 tenemos:38 tener:-25 tengo:-129 tengo_$:55 tengo__carro:-49 tengo__me:-30 tengo_carro:-119
tengo_el:-38 tengo_esa:75 tengo_ese:26 tengo_otro:50 tengo_quien:-30 texas:89 text_me:35 texting:33 th:-37 than:-25
than_the:-31 thanks_$:-38 thanks__is:45 thanks_it:50 that:110 that_$:-75 that__anymore:26 that__has:44 that__is:52
that__so:32 that_car:96 that_done:-45 that_for:41 that_in:36 that_is:-92 that_isnt:-35 that_off:-29 that_one:64
that_ones:32 that_thing:36 that_truck:97 that_was:27 the:125 the__and:88 the__are:-38 the__change:-27 the__day:35
the__from:-37 the__has:28 the__is:49 the__last:52 the__monday:25 the__my:-30 the__of:-36 the__off:33 the__oil:28
the__on:-29 the__one:56 the__owner:57 the__parking:70 the__please:-32 the__says:-32 the__since:32 the__that:-30
the__to:34 the__took:37 the__was:42 the__when:27 the__with:-40 the__year:-25 the__you:-43 the_airport:-33
the_back:-41 the_bank:46 the_bottom:43 the_bus:-36 the_car:-98 the_drive:-26 the_fire:33 the_garage:-26 the_gas:26
the_keys:34 the_kid:-26 the_lake:41 the_last:-42 the_lot:-29 the_mall:34 the_morning:-33 the_new:71 the_next:30
the_old:120 the_one:-44 the_owner:-45 the_quick:-35 the_sky:49 the_summer:26 the_texts:-37 the_th:-34 the_tires:-28
the_total:-67 the_truck:43 the_wagon:50 the_wrong:-34 them:30 then_it:-25 these_anymore:-31 these_days:56 they__it:65
they__the:-25 think:27 think_$:46 this:-25 this__belongs:-36 this__is:43 this__you:33 this_is:-33 this_morning:35
this_number:-49 this_thing:32 this_weekend:33 those_$:49 though:40 though_$:40 thought:-35 three:-33 thursday_$:46
tiempo_$:34 tiene:88 tiene_mi:113 tienen:-33 till:-26 time:-113 times:29 tires:-29 to:62 to_$:-34 to__for:45
to__it:-78 to__these:-35 to__what:-27 to_a:93 to_be:-57 to_bring:33 to_do:-40 to_drive:-25 to_find:29 to_it:-38
to_keep:-38 to_my:150 to_our:50 to_pay:46 to_receive:-28 to_see:-27 to_that:71 todavia:-33 todavia_no:-27 todo_y:36
told_me:-37 tomo:-27 tomorrow_$:33 tomorrows:-25 too:-44 took:136 took__of:-76 took__to:-56 took_care:-76 took_it:40
took_the:186 total:-165 total_$:-74 totaled:150 towed:60 traded:117 traded__in:59 traded_it:60 traffic:-27 traigo:67
train:25 tree:76 troca_$:-30 troca__la:53 troca_ya:32 truck:25 truck_$:-56 try:-30 tues:-30 tuesday:31 twice:-41
twice_today:-56 two:45 two_weeks:-30 uh:-26 un:58 un__me:48 un_ano:54 una:156 una__no:44 under:38 under_it:37
under_the:-39 uno:61 unos:-29 unsubscribe_$:73 unsubscribe_me:38 until:-28 up:68 up__a:-36 up__the:37 up_for:-50
up_the:30 up_with:26 update:55 update_your:55 use:-42 use_the:-26 va:-42 va_$:-25 vale:-47 van__tener:-25 van_a:-80
ve:-32 vea:-27 vecino:26 vehiculo:80 vender:-109 vendi:202 vendi_$:33 vendimos:62 vengo:31 vez:-60 vez_pasada:-25
vida:60 vida_$:35 vieja:-31 viene:-28 voy:-52 voy__me:62 voy__no:37 voy_a:-98 wagon:40 want:-26 want_it:-32 wants:-28
was__in:-28 was_a:30 was_done:-33 we:85 we__have:29 we__it:27 we__need:34 we__that:54 we__to:39 we_dont:31 we_gave:32
we_got:-32 we_had:34 we_have:-85 we_sold:58 week_$:-68 weekend:25 weekend_$:-31 weeks:-47 went:133 went__and:-25
went__in:29 went_to:124 were:-57 what:27 what__it:-35 what__you:64 what_is:-54 what_my:-27 what_was:49 when:-83
when_the:-46 while:-26 white:26 whole:-45 why:-25 wife__the:-28 wifes:-35 will:-38 will__it:-36 will_be:44 wish:-35
wish_to:-35 with__i:132 with__in:32 with__texts:-38 with_me:73 with_my:-32 with_someone:85 with_tax:-51 wk:-34
wk_$:-35 work_on:76 worry:-30 would__have:-30 would_i:-31 would_it:-25 wrecked:61 wrecked_it:29 write:80
write__down:35 wrong:-54 wrote:59 wrote_it:73 y:67 y__ahi:59 y__en:64 y__lo:28 y__no:-34 y__que:-26 y__tengo:-48
y_de:51 y_el:40 y_ese:31 y_la:35 y_me:-58 y_ni:44 y_nos:35 y_nunca:36 y_se:26 y_ustedes:62 y_ya:-124 ya:75 ya__a:87
ya__cambie:-81 ya__de:76 ya__di:55 ya__el:-56 ya__en:75 ya__es:231 ya__existe:40 ya__hay:60 ya__hicieron:25
ya__lo:-123 ya__manden:-50 ya__manejo:59 ya__me:-66 ya__mi:-39 ya__otro:132 ya__quiero:-27 ya__tengo:196 ya__tiene:72
ya__vendi:34 ya__voy:-29 ya_es:45 ya_esta:39 ya_fue:-42 ya_la:28 ya_lo:-113 ya_ni:79 ya_no:393 ya_paso:73
ya_pueden:-30 ya_quedo:-50 ya_se:-96 ya_tiene:35 ya_van:-26 yeah__is:46 yeah_that:46 yes__is:59 yet:-35 yet_$:-35
yo:-124 yo__la:-25 yo__tengo:-26 yo_no:-54 yonke:-26 yonke_$:-37 you:-111 you__give:33 you__it:-30 you__me:-81
you__my:-39 you__on:76 you__the:-28 you__your:-28 you_a:-37 you_buy:-47 you_can:115 you_charge:26 you_guys:-28
you_have:-46 you_keep:26 you_must:-27 you_see:95 you_then:-36 you_think:42 you_told:-30 you_work:76 your:25
your__desk:41 your_front:41 your_texts:32
"""
