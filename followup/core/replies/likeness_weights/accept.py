"""What speaks for and against `accept`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "accept"
BIAS = -91
WEIGHTS = """\
#abaj:-14 #abla:-28 #ablo:-32 #ably:24 #abso:42 #acei:24 #acep:22 #acer:56 #acie:-24 #acio:-33 #addr:24 #aded:-17
#adel:-16 #ader:15 #ades:14 #adra:23 #adre:-15 #affi:23 #afic:-18 #afir:40 #agai:-31 #agam:27 #agar:-40 #agen:99
#ages:-14 #agos:18 #agua:-23 #aguj:21 #ahea:92 #aigo:45 #aint:56 #aire:-19 #aiti:-54 #ajaj:-27 #ajar:-16 #ajes:-14
#akes:-111 #alar:27 #alca:-26 #aler:-14 #algo:-37 #algu:-16 #alin:-17 #alio:-14 #alla:91 #ally:-26 #almo:-34
#alre:-47 #alri:134 #also:39 #amen:25 #amin:-16 #amio:18 #amos:19 #anca:39 #ance:-99 #anda:26 #ande:-18 #ando:-50
#ands:19 #anej:-41 #ange:65 #angi:-21 #anni:79 #anot:-26 #anto:-34 #anyh:20 #anym:-48 #anyt:-31 #anzo:-25 #apar:27
#apen:-26 #apid:17 #appe:-37 #appi:30 #appy:41 #apri:-21 #apun:170 #aqui:18 #arag:-28 #arca:-23 #arco:-14 #arda:22
#arde:-28 #arec:15 #aren:-22 #arki:15 #arli:-24 #arlo:89 #arly:20 #arma:30 #arme:-14 #aron:-108 #arqu:-27 #arra:-26
#arro:-21 #arto:-15 #asad:-14 #asap:-15 #asel:-18 #asem:-17 #asis:-29 #asnt:-16 #ason:18 #aste:-21 #atal:-18
#atch:-43 #ated:-18 #ates:-34 #athe:-36 #atio:-23 #ativ:39 #atra:-24 #atte:-27 #augh:23 #avin:-25 #avis:-44 #away:-26
#awes:35 #axle:18 #ayar:-15 #aybe:-23 #ayer:-22 #azul:65 #back:-31 #baja:-26 #band:16 #bank:16 #bano:-22 #bble:41
#bear:44 #been:24 #behi:-16 #bell:32 #bett:58 #betw:-17 #biem:-26 #bien:-76 #blan:31 #blem:126 #bles:14 #blue:66
#body:-37 #book:84 #borr:-14 #both:28 #bran:36 #brar:-27 #brat:-27 #bril:-16 #brin:60 #brok:-37 #bscr:-23 #bsol:42
#bsup:64 #buen:14 #bump:-16 #butt:25 #bvio:95 #cada:-17 #caig:36 #camb:-41 #came:-51 #camp:14 #canc:-69 #cant:40
#canz:-26 #care:-20 #caro:-108 #carr:-20 #casi:-23 #cate:19 #ccio:14 #ceit:24 #cele:60 #cell:26 #cend:14 #cent:-19
#cept:15 #cerl:43 #chan:22 #chas:-26 #chec:-22 #ched:-18 #cheq:19 #ches:-19 #chev:69 #choo:-32 #ciga:18 #cita:-60
#cito:38 #ckup:29 #clar:110 #clie:-18 #cloc:-15 #coff:16 #cole:38 #colo:26 #come:-95 #como:21 #comp:58 #conf:49
#conm:27 #cons:20 #cool:25 #coun:67 #cove:20 #crap:-17 #crat:-43 #cree:19 #crew:20 #crib:-52 #ctio:-30 #cuad:23
#cual:-44 #cuan:15 #cuar:-20 #cuen:50 #cuer:20 #cues:53 #cuid:26 #culp:-26 #cuna:16 #cupa:-45 #cupe:28 #cupo:19
#dale:136 #dame:75 #darl:18 #date:20 #days:-87 #ddre:24 #deal:-54 #deci:14 #defi:58 #deja:-29 #deje:-22 #dejo:-71
#dela:-21 #dele:243 #deme:73 #demo:-69 #dent:-16 #ders:-26 #desd:-86 #dias:-63 #dida:-26 #didn:-51 #dier:-14 #diga:57
#digo:-60 #dine:-26 #ding:-33 #dios:43 #disc:-50 #dito:15 #done:66 #dont:88 #doub:186 #down:58 #drea:20 #dres:14
#dura:-19 #eads:-33 #eady:65 #eage:-33 #eale:-14 #eall:-37 #eals:-53 #ease:-95 #easo:18 #eate:-27 #eavi:-14 #ebod:-21
#ecci:16 #ecir:30 #ecla:14 #ecto:54 #ecue:16 #edal:-14 #edan:93 #eden:-23 #edes:-56 #eeds:19 #eeke:-21 #eeks:-24
#eeri:-41 #efin:58 #egad:-21 #egan:-15 #egas:-40 #egat:-28 #egla:-16 #egre:-26 #egui:17 #egun:-32 #egur:-35 #ehin:-16
#eite:24 #eith:-127 #ejan:-25 #ejor:-29 #ejos:-26 #eken:-21 #elan:-20 #elar:19 #elen:50 #elic:-17 #ella:15 #ello:14
#ells:25 #else:-48 #elta:-22 #emad:-15 #emel:-26 #emem:16 #emin:18 #emor:-44 #emos:45 #emov:-23 #enar:-14 #enas:-31
#enca:14 #ence:19 #enda:45 #ende:104 #endo:-58 #ends:-19 #enev:19 #engo:-17 #enme:-45 #enos:-28 #ensa:-25 #ense:15
#enso:18 #enta:-15 #ente:76 #ento:39 #entr:19 #ents:-21 #eocu:36 #eopl:15 #eque:53 #erab:25 #erca:-16 #erco:38
#erde:-17 #erdi:-48 #eres:88 #erfe:20 #erin:-42 #erlo:40 #erma:17 #ermi:18 #eron:-69 #eros:-14 #erro:49 #ersl:-16
#erta:22 #erte:14 #eryt:49 #esar:-14 #esch:-46 #escr:-28 #esda:16 #esde:-86 #esen:19 #esom:35 #espa:-23 #espe:-14
#espo:14 #essa:-24 #esse:-17 #essi:31 #esta:25 #este:28 #ethi:-21 #etim:53 #ette:64 #etwe:-17 #evam:-15 #evar:47
#ever:39 #exac:15 #exce:29 #expe:-17 #expl:-47 #exti:-15 #exto:23 #exts:-17 #fall:34 #falt:54 #fect:30 #feel:-25
#ffee:16 #ffic:-15 #ffir:45 #fico:-18 #fier:37 #fije:-18 #filt:-25 #find:-39 #fine:-71 #fini:48 #firm:129 #firs:-26
#five:-20 #flui:-25 #flus:22 #fore:-46 #forg:-91 #four:16 #frid:27 #from:-38 #fron:32 #fuga:-19 #gain:-31 #gale:171
#game:15 #gand:-17 #gara:-22 #gast:-15 #gati:-28 #gend:144 #gets:25 #gist:37 #give:-32 #glad:18 #goma:16 #good:-56
#gras:-15 #grat:-28 #gres:-25 #gual:-36 #guan:-15 #gues:76 #guie:-15 #guja:21 #guna:28 #guno:-61 #gunt:-39 #guro:-34
#gust:15 #habl:-55 #hace:30 #haci:-24 #haga:194 #hago:-49 #hake:-83 #half:-18 #hall:14 #hanc:-18 #hang:46 #hank:-29
#happ:47 #have:-100 #head:51 #heel:31 #hell:16 #hene:19 #hequ:19 #here:49 #herm:17 #hese:-30 #heve:69 #hich:-38
#hici:-22 #high:25 #hile:24 #hind:-16 #hine:22 #hing:50 #hink:-25 #hite:59 #hold:-16 #home:-17 #hone:-44 #hool:-32
#hori:-28 #hors:28 #hose:-15 #houg:36 #hour:-88 #hous:-22 #hree:-25 #hrou:-22 #huel:-16 #humo:-74 #hurs:16 #husb:16
#iaro:14 #ibir:-20 #ible:-35 #ibra:-25 #icie:-30 #icku:29 #idea:149 #ider:26 #idit:19 #idnt:-51 #ieme:-25 #iend:-68
#iene:14 #ierc:35 #ierd:18 #iero:-79 #ierr:44 #iert:21 #igar:18 #igua:-37 #iled:14 #iler:-27 #iles:-20 #ilte:-14
#imag:-33 #imat:18 #imon:86 #impo:-36 #inan:-17 #inde:36 #iner:-31 #info:-25 #ings:-16 #ingu:-44 #inio:14 #init:59
#inos:-23 #inst:-61 #inte:68 #ints:47 #inut:-42 #invo:-26 #ione:18 #ions:-17 #iper:16 #ires:-18 #irma:82 #irme:22
#irst:-26 #isar:-21 #isco:-21 #iscu:-30 #ised:-16 #isim:-19 #isit:-34 #ismo:-25 #isnt:-23 #issu:54 #ista:16 #iste:22
#isti:-27 #isto:-18 #itch:-22 #itel:58 #ithe:-127 #itin:-54 #itte:18 #ittl:-29 #ives:61 #jaja:23 #jala:39 #jale:121
#jalo:55 #jand:-37 #jaro:-35 #jefe:23 #junt:17 #just:-36 #keep:19 #kend:-21 #kids:-27 #know:-15 #lada:30 #lado:-22
#lain:46 #laje:-18 #lanc:37 #lann:73 #lant:-27 #larm:28 #laro:119 #last:-84 #late:-25 #lcan:-26 #ldnt:88 #leak:15
#leas:-107 #left:-47 #lego:-30 #lejo:-20 #lenm:-20 #leno:-24 #lent:21 #lept:-16 #lers:-22 #lets:-48 #leva:67
#levo:-46 #lgui:-14 #lico:-28 #lied:-28 #lien:-26 #lier:-23 #lies:17 #ligh:-14 #like:43 #line:-25 #ling:-17 #litt:-29
#live:18 #llaj:-18 #lleg:-40 #llen:-22 #llev:19 #llin:15 #lmos:-33 #loca:41 #lock:-30 #lora:14 #lost:-34 #love:26
#lrea:-47 #lrig:134 #lter:-14 #ludo:-19 #lueg:-102 #luid:-25 #lune:17 #lush:22 #lute:42 #maam:24 #made:-32 #mage:-34
#make:-16 #malo:-31 #mane:-42 #mara:29 #marc:-27 #marq:-21 #mart:-39 #mate:21 #mati:66 #mayb:-23 #mber:-43 #mbia:-17
#mbie:16 #mbsu:64 #mebo:-21 #mejo:-28 #mela:-41 #memb:16 #meno:-19 #mens:-18 #mera:-17 #mero:-22 #mess:-21 #meth:-21
#meti:49 #mier:35 #migh:85 #migo:21 #mile:-15 #mill:-48 #mind:43 #mine:15 #mins:-16 #minu:-42 #mion:18 #mism:-21
#miss:113 #mito:-15 #modo:42 #moke:14 #moki:18 #mone:-32 #mont:-25 #moot:54 #more:-74 #most:-35 #move:-31 #mpla:99
#mpor:-14 #mpos:-22 #mpra:16 #mpre:-36 #much:-48 #muev:-19 #myse:-25 #ncel:-69 #ncon:-14 #ndal:26 #ndam:82 #ndan:-19
#ndar:-16 #nday:-22 #ndem:87 #nder:30 #ndid:18 #ndin:-17 #near:14 #need:-36 #neit:-152 #neja:-38 #nero:-31 #ners:-21
#neta:14 #neve:-14 #nged:32 #nger:-23 #nges:38 #ngin:-17 #ngun:-44 #nice:-51 #nigh:-68 #nine:42 #nion:14 #nite:59
#nmig:27 #nner:-14 #nnin:28 #nobo:-15 #none:-33 #noon:24 #nsaj:-18 #nsid:30 #nste:-57 #nsub:-20 #ntac:-15 #ntar:-16
#ntem:72 #nten:76 #nter:17 #ntre:-28 #ntro:31 #ntua:25 #nuev:20 #numb:-54 #nunc:-22 #nute:-21 #nuto:-20 #nver:-16
#nvoi:-24 #nyho:20 #nymo:-48 #nyth:-26 #obbl:43 #oble:113 #obod:-15 #obot:-18 #obra:-19 #obvi:95 #ocat:15 #oday:-41
#odem:-26 #oder:-40 #odos:-28 #odre:-18 #offe:18 #oger:21 #oice:-25 #oken:-24 #oles:29 #olor:30 #olut:42 #omas:19
#omeb:-21 #omer:-16 #omet:28 #ompl:94 #ompr:-18 #once:24 #onda:17 #onde:-19 #oner:-16 #onet:15 #oney:-38 #onge:-18
#onmi:27 #onsi:25 #onta:-16 #onte:28 #onth:-25 #ooki:-30 #ooth:54 #opin:14 #opte:-14 #orad:14 #oral:27 #orde:28
#orev:-41 #orge:-37 #orgo:-51 #orit:-41 #orks:-51 #orre:29 #orry:-46 #orse:-63 #orta:-15 #orti:15 #oser:-17 #osib:-25
#otal:24 #othi:39 #otra:32 #ough:35 #ould:32 #ound:-36 #ount:67 #oure:16 #ours:59 #oved:20 #over:-20 #ower:-16
#paci:-21 #paga:-25 #pana:15 #papa:16 #para:-46 #part:17 #pasa:-49 #pase:-29 #paso:21 #pass:-40 #past:-21 #payi:15
#peda:-14 #pedi:17 #pena:-43 #pens:-27 #peop:15 #pera:20 #perd:-74 #pere:-18 #perf:20 #pero:27 #perr:19 #phon:-30
#pick:37 #pier:41 #pini:14 #plai:46 #plan:110 #plea:-100 #plic:-18 #pode:-66 #podr:-23 #pone:-25 #port:-21 #posi:-25
#powe:-16 #pped:-17 #ppen:-24 #pran:16 #prec:20 #preg:-39 #pren:-14 #preo:35 #pret:-18 #pric:45 #pril:-19 #prin:-28
#prob:128 #pued:-29 #pues:114 #pull:17 #punt:199 #puro:-22 #puse:34 #push:-16 #quea:29 #qued:-98 #quej:71 #quem:-31
#quic:18 #quiv:-14 #rade:-32 #raff:-23 #rafi:-18 #rage:-31 #rail:-27 #rale:27 #ramo:26 #rapi:15 #raro:-24 #rasa:-29
#rase:-32 #rata:-15 #ratc:-43 #rate:-36 #rath:-35 #rati:-21 #rato:15 #raya:-15 #rcol:36 #rdan:22 #rden:27 #rdid:-35
#rdon:-31 #read:56 #real:-44 #ream:14 #rear:19 #reas:30 #reat:-23 #reca:-17 #rect:33 #recu:16 #reet:25 #rega:-42
#regr:-26 #regu:-42 #remi:16 #remo:-27 #rend:-16 #rent:-30 #reoc:35 #repr:-14 #resa:68 #resc:-46 #reso:-16 #rest:16
#reve:-33 #rfec:20 #rged:-17 #rget:-37 #rgot:-51 #ribe:-22 #ribo:-14 #rice:41 #ride:17 #ried:-17 #rien:-15 #ries:31
#rimo:20 #rint:-16 #rise:22 #risi:-18 #rita:-35 #rlie:-24 #rlos:15 #rman:17 #rmat:68 #rmis:15 #rnin:-14 #road:-24
#robl:117 #robo:-18 #roke:-37 #roll:29 #rong:-36 #ront:26 #room:26 #rque:-17 #rran:-24 #rrec:40 #rreg:-16 #rrie:16
#rsda:-28 #rsle:-16 #rsta:-16 #rted:18 #rtes:-36 #rtil:15 #ruck:54 #rued:-14 #rumb:-15 #runn:-50 #ryth:49 #saca:-18
#sada:16 #sado:-19 #safe:17 #sage:-18 #saje:-18 #sale:-52 #sali:-23 #sban:16 #scho:-32 #scra:-59 #scri:-52 #scul:-25
#seda:100 #sela:-24 #self:-32 #semo:-23 #send:-25 #sera:15 #seri:-14 #shak:-87 #shal:14 #shin:22 #sibl:-33 #side:45
#siet:14 #sign:95 #simo:58 #sist:-33 #skip:-19 #slep:-16 #slow:-21 #smok:32 #smoo:54 #sobr:-31 #sold:-90 #solu:42
#some:37 #sorr:-44 #sort:17 #soun:-37 #spac:-19 #spar:16 #sper:-33 #spir:-15 #spon:-24 #spos:18 #sque:17 #ssag:-19
#ssed:-21 #ssue:54 #stam:-32 #stan:-22 #star:22 #stat:-18 #stea:-63 #sted:-15 #stee:-35 #stil:43 #stir:-31 #stop:-99
#stor:20 #stoy:-17 #stra:-15 #stre:37 #subs:-23 #suen:39 #suit:-23 #sund:-16 #supe:17 #supp:30 #supu:40 #sura:-18
#sure:97 #swap:-21 #swee:14 #swin:22 #swit:-18 #tact:-15 #tain:30 #take:-51 #talk:-39 #tall:-14 #tamb:45 #tamo:-33
#tare:83 #tari:16 #tart:-44 #tati:-22 #tche:-20 #tead:-57 #tede:-55 #teer:-41 #tell:-26 #tely:104 #teme:103 #temp:18
#tend:-23 #tent:39 #tera:-23 #tere:103 #text:-75 #than:-25 #that:38 #them:-61 #then:84 #ther:-97 #thes:-30 #they:-14
#thin:14 #this:-16 #thos:-14 #thou:30 #thre:-31 #thur:15 #tien:-17 #till:43 #time:36 #ting:-69 #tion:-48 #tipo:-19
#tivo:25 #toca:23 #toda:-59 #todo:89 #took:-30 #tort:15 #tory:17 #tota:24 #trad:-30 #traf:-41 #trai:-35 #tras:-27
#trat:-18 #trea:-21 #tree:22 #treg:-18 #trel:14 #tren:-23 #truc:55 #trun:15 #tter:73 #tual:16 #tues:-89 #twee:-17
#twis:52 #uadr:23 #uand:43 #uant:-55 #uart:-25 #ubsc:-23 #ucha:-15 #ucks:-17 #ucti:-14 #udos:-17 #ueal:15 #ueda:-119
#uede:-79 #uedo:58 #uego:-103 #ueja:56 #uele:-16 #uelt:-22 #uema:-16 #ueme:-14 #uena:61 #uent:49 #uerd:20 #uess:76
#uest:83 #ueva:-22 #uevo:31 #uick:18 #uide:22 #uien:-41 #uits:-21 #uivo:-14 #uldn:88 #ulls:-21 #ulpe:-25 #umbe:-54
#unad:16 #unas:14 #unca:-22 #unda:-19 #unds:-22 #unes:17 #unni:-50 #unos:-29 #unsu:-20 #unta:-22 #unte:64 #unto:104
#untu:14 #uper:31 #upue:40 #ursd:-28 #urse:99 #usba:16 #usta:52 #uste:-60 #usto:-56 #utel:42 #utes:-22 #utos:-20
#utte:27 #vale:-48 #vamo:29 #varl:51 #vaya:20 #veci:22 #vega:-40 #vemo:89 #veni:-21 #verd:-22 #vere:70 #very:33
#vibr:-30 #vide:-23 #vien:30 #ving:-38 #visi:-35 #viso:-14 #voic:-25 #vuel:-33 #wait:16 #wasn:-31 #wate:22 #week:-77
#ween:-17 #weet:14 #well:29 #went:-33 #weso:35 #what:16 #whee:31 #when:-133 #whic:-38 #whil:24 #whit:59 #wild:31
#will:63 #wing:26 #wint:-17 #wipe:25 #wist:52 #witc:-18 #wobb:43 #wont:-22 #work:-107 #worr:25 #wors:-98 #woul:21
#wron:-36 #xact:15 #xcel:36 #ximo:-15 #xpla:-41 #xtin:-15 #xtos:23 #yaro:-15 #yeah:48 #yhow:20 #ymor:-48 #ysel:-25
#ythi:24 %again_later:-147 %again_later%agree:47 %again_later%away:-19 %again_later%bring:18 %again_later%call_off:31
%again_later%car:30 %again_later%car_part:21 %again_later%doubt:24 %again_later%family:15 %again_later%gone_car:38
%again_later%how_long:14 %again_later%lift:-25 %again_later%machine:22 %again_later%meaning:14
%again_later%message:-53 %again_later%money:27 %again_later%on_way:21 %again_later%question:32
%again_later%shift_it:-16 %again_later%start_again:-49 %again_later%thanks:16 %again_later%wrong_one:49 %agree:435
%agree%away:21 %agree%bad:-43 %agree%bring:314 %agree%busy:52 %agree%call_off:-134 %agree%car:41 %agree%do_it:32
%agree%doubt:131 %agree%elsewhere:92 %agree%family:60 %agree%gone_car:123 %agree%how_long:193 %agree%leak:16
%agree%lift:52 %agree%machine:27 %agree%message:-59 %agree%money:-23 %agree%noise:45 %agree%odometer:22
%agree%on_way:148 %agree%opening:49 %agree%pay_day:-20 %agree%phone:66 %agree%question:121 %agree%season:28
%agree%shift_it:68 %agree%smoke_smell:-65 %agree%staff:130 %agree%start_again:50 %agree%thanks:-57
%agree%wrong_one:83 %away:-109 %away%bring:32 %away%call_off:55 %away%car:23 %away%car_part:14 %away%doubt:-31
%away%family:-22 %away%leave_me:48 %away%noise:34 %away%odometer:-16 %away%on_way:94 %away%pay_day:-14
%away%question:-17 %away%smoke_smell:21 %away%wrong_one:31 %bad:-66 %bad%busy:-28 %bad%call_off:22 %bad%car_part:-43
%bad%doubt:-26 %bad%fails:-22 %bad%meaning:125 %bad%money:-30 %bad%noise:22 %bad%on_way:-26 %bad%phone:-15
%bad%question:-20 %bad%refuse:171 %bad%staff:-21 %bring:-16 %bring%busy:50 %bring%call_off:73 %bring%car_part:38
%bring%fails:-15 %bring%how_long:-21 %bring%leave_me:-41 %bring%money:21 %bring%odometer:-14 %bring%on_way:-19
%bring%phone:18 %bring%refuse:74 %bring%thanks:53 %bring%who:-15 %bring%wrong_one:42 %busy:25 %busy%call_off:-42
%busy%car:15 %busy%do_it:22 %busy%fails:-17 %busy%money:15 %busy%question:16 %busy%refuse:-45 %busy%start_again:16
%busy%thanks:27 %call_off:-102 %call_off%car:-26 %call_off%car_part:-31 %call_off%do_it:77 %call_off%doubt:40
%call_off%elsewhere:36 %call_off%fails:-69 %call_off%family:-23 %call_off%how_long:98 %call_off%leave_me:55
%call_off%lift:105 %call_off%machine:16 %call_off%money:-96 %call_off%noise:-27 %call_off%odometer:-25
%call_off%on_way:47 %call_off%pay_day:-14 %call_off%phone:-24 %call_off%place:-36 %call_off%question:143
%call_off%refuse:129 %call_off%season:21 %call_off%shake:-33 %call_off%shift_it:115 %call_off%thanks:-33 %car:74
%car%car_part:30 %car%do_it:-16 %car%elsewhere:40 %car%gone_car:-78 %car%how_long:-29 %car%leave_me:21 %car%lift:26
%car%noise:28 %car%on_way:32 %car%phone:-20 %car%shake:-17 %car%wrong_one:31 %car_part:-125 %car_part%do_it:30
%car_part%doubt:24 %car_part%fails:-14 %car_part%how_long:20 %car_part%noise:31 %car_part%odometer:45
%car_part%on_way:63 %car_part%place:24 %car_part%question:117 %car_part%season:15 %car_part%shake:48
%car_part%smoke_smell:18 %car_part%start_again:14 %car_part%thanks:21 %do_it:-128 %do_it%elsewhere:-28
%do_it%fails:-16 %do_it%gone_car:73 %do_it%how_long:-42 %do_it%leave_me:36 %do_it%meaning:17 %do_it%message:20
%do_it%money:-50 %do_it%pay_day:-20 %do_it%place:14 %do_it%question:-42 %do_it%refuse:50 %do_it%season:-26
%do_it%shift_it:15 %do_it%staff:-27 %do_it%start_again:18 %do_it%wrong_one:-29 %doubt:53 %doubt%gone_car:-46
%doubt%how_long:60 %doubt%leave_me:33 %doubt%lift:42 %doubt%message:-38 %doubt%odometer:-22 %doubt%on_way:38
%doubt%pay_day:-15 %doubt%phone:14 %doubt%place:52 %doubt%question:-32 %doubt%refuse:-130 %doubt%season:-15
%doubt%staff:18 %doubt%wrong_one:-32 %elsewhere:-39 %elsewhere%message:-20 %elsewhere%money:39 %elsewhere%on_way:17
%elsewhere%question:40 %elsewhere%refuse:21 %elsewhere%season:14 %elsewhere%staff:-16 %elsewhere%who:19
%elsewhere%wrong_one:22 %fails%gone_car:38 %fails%money:23 %fails%noise:19 %fails%on_way:-35 %fails%place:50
%fails%refuse:-33 %fails%staff:27 %fails%start_again:-22 %fails%thanks:20 %family:-18 %family%how_long:18
%family%money:-23 %family%odometer:25 %family%on_way:-30 %family%question:28 %family%shift_it:45 %family%thanks:20
%gone_car:-124 %gone_car%lift:-17 %gone_car%money:50 %gone_car%on_way:-14 %gone_car%question:88 %gone_car%refuse:47
%gone_car%season:-23 %gone_car%shift_it:26 %gone_car%staff:-21 %gone_car%start_again:23 %gone_car%wrong_one:37
%how_long:-120 %how_long%leave_me:14 %how_long%meaning:22 %how_long%money:53 %how_long%on_way:-85 %how_long%place:-65
%how_long%question:102 %how_long%refuse:-49 %how_long%season:17 %how_long%shift_it:-22 %how_long%start_again:15
%how_long%thanks:-21 %leak:-36 %leave_me:-126 %leave_me%meaning:18 %leave_me%message:-22 %leave_me%money:27
%leave_me%on_way:38 %leave_me%refuse:63 %leave_me%smoke_smell:26 %leave_me%start_again:15 %leave_me%thanks:-14
%lift:42 %lift%money:-15 %lift%opening:-39 %lift%question:-32 %lift%shift_it:22 %lift%start_again:18 %machine:-41
%machine%money:14 %machine%on_way:18 %machine%refuse:-20 %machine%staff:16 %meaning%noise:-17 %meaning%phone:-21
%meaning%question:-39 %meaning%refuse:119 %meaning%staff:-15 %meaning%wrong_one:-27 %message:-62 %message%question:27
%message%start_again:-81 %message%thanks:44 %message%wrong_one:-33 %money:-98 %money%opening:22 %money%pay_day:-23
%money%question:-33 %money%shift_it:50 %money%smoke_smell:-76 %money%start_again:16 %money%thanks:-20
%money%wrong_one:-19 %noise:21 %noise%start_again:-19 %odometer:-28 %odometer%on_way:-31 %odometer%refuse:-22
%on_way:-84 %on_way%opening:19 %on_way%phone:-28 %on_way%place:-17 %on_way%question:81 %on_way%refuse:77
%on_way%shift_it:50 %on_way%smoke_smell:27 %on_way%thanks:61 %on_way%wrong_one:26 %opening:-49 %opening%question:47
%pay_day:-48 %pay_day%question:-33 %pay_day%refuse:-37 %pay_day%season:-27 %phone:-144 %phone%question:16
%phone%refuse:-68 %phone%shift_it:21 %place:-87 %place%question:56 %place%refuse:-21 %place%staff:25
%place%start_again:47 %question:-196 %question%refuse:177 %question%season:43 %question%shake:16
%question%shift_it:23 %question%start_again:55 %question%who:-70 %question%wrong_one:68 %refuse:-64 %refuse%shake:-27
%refuse%shift_it:77 %refuse%staff:-58 %refuse%start_again:30 %refuse%who:-18 %refuse%wrong_one:37 %season:-78
%shake:-84 %shift_it:-201 %shift_it%staff:-16 %shift_it%start_again:-35 %shift_it%thanks:15 %smoke_smell:-104
%staff:-47 %staff%wrong_one:-71 %start_again:-50 %start_again%thanks:-14 %start_again%who:16
%start_again%wrong_one:-26 %thanks:-20 %thanks%wrong_one:14 %who:-102 %wrong_one:-96 @?:-41 @after_visit:259
@after_visit_cant_complain:34 @car:471 @confirm:129 @confirm_stop:-693 @confirm_thumbsup:40 @day:-34 @later:-132
@nothing:-526 @odometer:-140 @offers:-809 @reading:-46 @time:-68 @times:-81 @walk_in:193 @walk_in_will_do:26 ^_$:68
^_a:-102 ^_abren:-16 ^_absolutely:42 ^_affirmative:28 ^_ahi:188 ^_ahorita:-15 ^_all:68 ^_already:-27 ^_alright:41
^_am:-26 ^_ando:-53 ^_any:-40 ^_apenas:-14 ^_appreciate:-54 ^_aqui:16 ^_are:-49 ^_as:-53 ^_at:-14 ^_be:-124
^_been:-19 ^_bendiciones:-19 ^_better:42 ^_bless:-17 ^_blue:39 ^_both:37 ^_buen:-14 ^_call:-35 ^_can:-25 ^_cancel:-36
^_cant:86 ^_car:15 ^_changed:-24 ^_claro:110 ^_como:144 ^_con:24 ^_confirmo:33 ^_could:-57 ^_couldnt:-21 ^_count:91
^_cual:-38 ^_cuando:-42 ^_cuanto:-105 ^_dale:116 ^_de:122 ^_definitely:52 ^_desde:-15 ^_despues:-16 ^_did:-14
^_donde:-16 ^_dont:26 ^_el:-77 ^_en:-85 ^_end:-20 ^_es:-48 ^_esta:75 ^_estoy:-30 ^_eta:-44 ^_everything:77
^_excelente:15 ^_fine:106 ^_for:17 ^_free:19 ^_fri:-27 ^_friday:-52 ^_go:87 ^_going:-22 ^_good:-29 ^_got:-27
^_half:-44 ^_hasta:-15 ^_have:-24 ^_hay:-63 ^_hit:-14 ^_hm:-34 ^_hmm:-51 ^_how:-97 ^_hoy:-40 ^_id:122 ^_if:72
^_ill:-50 ^_info:-18 ^_is:-134 ^_it:-22 ^_jala:14 ^_kids:-20 ^_la:25 ^_late:-16 ^_le:-59 ^_let:-34 ^_lets:-28
^_llego:-31 ^_llevo:-19 ^_lo:-23 ^_loud:-14 ^_luego:-42 ^_manana:-75 ^_mande:-17 ^_martes:-18 ^_mas:-21 ^_me:129
^_mejor:-16 ^_mi:-17 ^_might:86 ^_monday:-39 ^_move:-18 ^_my:18 ^_need:-41 ^_neither:-152 ^_next:-22 ^_ninguno:-54
^_no:37 ^_nobody:-14 ^_none:-30 ^_nop:-39 ^_nos:22 ^_not:-130 ^_nothing:39 ^_nunca:-16 ^_oh:-23 ^_ok:216 ^_olvide:-19
^_on:-54 ^_one:-34 ^_orale:27 ^_para:-54 ^_paso:-29 ^_perdon:-18 ^_perfect:19 ^_perfecto:51 ^_please:90 ^_podemos:-20
^_por:106 ^_prefiero:-18 ^_primero:15 ^_puedo:-30 ^_que:-141 ^_quedo:70 ^_quiero:-50 ^_rain:24 ^_reschedule:-35
^_running:-31 ^_sale:196 ^_saturday:-34 ^_scratch:-23 ^_se:-73 ^_sedan:36 ^_see:115 ^_si:481 ^_sign:52 ^_simon:59
^_so:-19 ^_sold:-20 ^_something:-33 ^_sorry:-15 ^_sounds:53 ^_still:91 ^_stop:-106 ^_suena:20 ^_sure:209 ^_tengo:-17
^_thank:-152 ^_that:119 ^_the:39 ^_there:-32 ^_this:-19 ^_thumbsup:64 ^_thurs:-43 ^_thursday:-112 ^_tiene:-20
^_tienen:-27 ^_tire:-14 ^_todo:161 ^_tomorrow:-29 ^_truck:18 ^_tuesday:-28 ^_two:-16 ^_va:78 ^_voy:-24 ^_we:15
^_were:15 ^_what:-169 ^_when:-37 ^_whenever:-22 ^_where:-28 ^_which:-32 ^_white:28 ^_who:-16 ^_why:50 ^_will:49
^_wont:-37 ^_works:131 ^_would:-57 ^_wouldnt:52 ^_y:70 ^_ya:16 ^_ye:106 ^_yep:170 ^_yes:237 ^_yo:-29 ^_you:-46 a:-35
a_$:41 a__a:32 a__day:-20 a__hora:-54 a__late:-27 a__now:16 a__of:-33 a__on:-15 a__one:-43 a__out:19 a__pero:21
a__que:-27 a__si:-49 a__time:-14 a_como:-53 a_fallar:19 a_good:-18 a_hacer:-21 a_little:-27 a_poder:-39 a_que:-35
a_ride:15 a_salir:15 a_ser:-15 abajo:-14 able:-15 able_to:-15 abren_$:19 abril:-16 absolutely:42 aceite:26 add:38
address:24 address_$:18 address_again:19 affirmative:28 after_all:-16 after_i:14 after_work:15 again:-31 again_$:-29
agarro:-18 agarro_el:-25 agendeme:95 agua:-28 agua_$:-25 aguja:21 ahead:92 ahi:216 ahi_$:-91 ahi__vemos:50
ahi_estare:67 ahi_le:41 ahi_nos:47 ahi_paso:18 ahora:26 ahora_no:-20 ahorita:-28 aire:-19 aire_$:-17 al:56 al_cien:43
al_mediodia:15 alarma:34 alcanzo:-25 algo:-24 alguien:-14 algun:-14 alineacion:17 all:42 all__for:61 all__them:-17
all_good:93 all_of:-20 all_set:-17 alla:47 alla_$:-20 almost:-33 already:-47 already__it:-18 already_got:-19
alright:-21 also:39 alta:-39 am:24 am_i:32 an:69 an__change:21 an_appointment:87 an_hour:-20 an_oil:21 and:22
and__like:17 and__will:-15 and__you:86 and_could:20 and_i:-19 and_what:26 ando:-22 ando_en:24 anos:17 another:-30
another_bill:-14 antes:26 antes__que:16 any:-19 any__but:25 any__next:33 any_day:58 anyhow:20 anymore:-48
anymore_$:-46 anything:-26 apenas:-26 appointment_$:58 appreciate:20 appreciate_it:-42 april:-19 april_$:-18
apunteme:97 aqui:19 aqui_$:-16 are:-23 are__guys:14 are__still:-17 arm:52 as:51 as_butter:27 as_well:56 asap:-15
asi:-49 asi_$:-37 asi_que:27 ask_me:17 at:-39 at_$:-50 at__counter:-15 at__you:27 at_all:35 at_and:-14 at_if:35
at_noon:27 at_that:16 at_the:-44 at_work:-20 atras:25 avisar:-19 away:-26 awesome:35 axle:18 ayer:-22 azul:58
azul_$:38 b:-14 back:-29 back_$:-23 back__the:24 back_by:23 back_up:-14 bad:122 bad_$:27 bank:18 be:-85 be__at:-33
be__by:-46 be__in:-68 be__the:24 be_a:-33 be_coming:-19 be_late:-30 be_there:99 been:24 been__to:54 before:-17
before_$:-19 before_the:14 behind:-16 bendiciones_$:17 better:58 better_$:26 between:-16 bien:-116 bien_$:-61
bien_el:-31 bien_gracias:23 blanca:46 bless:-26 blue:66 blue_$:28 blue_one:31 blue_sedan:15 book:125 book_it:43
book_me:78 booking:-26 both:32 both__them:37 both_of:37 brand:17 bring:43 bring__in:23 bring_it:42 broken:-23 btw:69
buen:-19 bueno:30 but:-70 but__is:-18 but__much:-76 but__need:27 but_how:-57 but_i:43 but_it:-60 but_no:-20
but_not:-16 but_the:-59 butter:27 by:19 by_$:-38 by__way:17 by_the:18 cada:-17 caigo:36 caigo_$:23 calendar:15
call__me:14 call__my:-15 call__to:14 call_me:-45 call_off:-15 cambia:-20 cambiar:-24 cambiaron:14 cambieme:-19
came:-39 came_up:-27 camioneta:19 camioneta_blanca:24 can:-54 can__come:-19 can__do:-67 can__get:-16 can__make:105
can__me:-40 can__stop:20 can__the:-15 can_do:-15 can_i:50 can_text:-41 can_we:-51 cancel:-121 cancel_it:-135
cancel_my:38 cancel_the:-40 cancele:19 cancelen:39 cancelled:14 cant:33 cant__in:-45 cant__it:-81 cant_come:-59
cant_complain:36 cant_do:-47 cant_make:-51 cant_wait:90 car:-85 car_$:-23 car_is:-40 car_was:-14 caro:-99 caro_$:-38
carro_$:-27 carro__no:17 cars_$:-20 casi:-23 center:-34 chance:-17 change_it:-20 change_my:-20 changed:32
changed__mind:-24 changed_my:-26 changes:39 changing:-20 charge:18 charge_$:16 charged:-15 charged__for:-14
charged_me:-14 check:-14 check_$:-20 check_my:15 cheque:21 cien:41 cien_$:32 cita:-55 cita_$:-43 claro:113 claro_$:35
claro__si:-21 cobran:17 cobran_$:17 coffee:16 come:-90 come_$:-23 come_at:-17 come_back:-15 come_friday:-23
come_in:-42 come_thursday:-14 coming_$:-29 coming__the:24 como:26 como_a:-18 como_en:-18 como_no:221 como_si:-23
complain:36 complain_$:34 complaints:52 con__trabajo:18 con_el:36 con_los:-24 con_ustedes:-42 confirmado:14
conmigo:27 conmigo_$:35 contento:25 cool:18 correcto:19 could:-16 could_i:-17 couldnt:15 couldnt_be:-24 count:97
count_me:76 counter:-15 cual:-55 cual_es:-25 cualquier:17 cualquier_dia:19 cuando:43 cuando_me:-14 cuanto:-22
cuanto_$:-126 cuanto__lo:15 cuanto__sale:-15 cuanto__unas:15 cuanto__va:15 cuanto_cobran:17 cuanto_cuesta:65
cuanto_rato:16 cuanto_sale:-45 cuanto_se:23 cuanto_tarda:20 cuanto_va:-20 cuanto_vale:-18 cuesta:53 cuesta_$:40
cuesta__cuanto:24 cuesta_y:24 cuide:22 da:-18 dale:116 day:14 day_$:-37 day__week:31 day_but:21 days:-15 de:24
de__a:15 de__dos:-54 de__es:-22 de__manana:14 de__si:-37 de__voy:20 de_ahi:-18 de_alta:-24 de_atras:14 de_la:-23
de_lo:21 de_los:-43 de_opinion:15 de_que:-33 de_una:153 de_verdad:-20 deal:17 decir:23 definitely:58 deja:-15
dejaron:-31 dejo:-71 del:30 del_jueves:-15 deme:-23 desde:-86 desde_el:-14 desde_que:-49 despues_de:17 dia:-15
dia_$:-44 dias:-63 dias_$:-19 did:-74 did_it:-14 did_that:-52 didnt:-51 diga:41 digo:-59 dinero:-22 dios:43
disculpe:-16 do:141 do_$:190 do__but:-15 do__do:-23 do__get:-27 do__go:-16 do__guys:-24 do__have:17 do__know:-21
do__need:-48 do__work:-21 do_friday:-26 do_i:-63 do_it:107 do_you:-87 does_a:16 done:68 done_$:19 done_last:-26
dont:88 dont__it:-17 dont__my:50 dont__you:-33 dont__your:-15 dont_have:26 dont_know:-32 dont_need:-22 dont_see:44
dont_think:-31 dont_want:-34 door:-14 door_$:-16 down:111 down_$:202 down_for:-14 down_the:-26 doy:-14 dream:20
drive:-56 drive_to:-57 drives:63 drives_like:58 drop__off:-16 dura:-16 earlier:-23 early_$:19 either:26 el__a:60
el__antes:38 el__como:-15 el__cuanto:29 el__despues:31 el__dia:-26 el__en:14 el__no:-39 el__pero:-24 el__quedo:16
el__se:-25 el__si:-42 el__temprano:30 el__va:-22 el__vibra:-18 el__y:-25 el__ya:19 el_aceite:15 el_azul:53 el_de:26
el_dia:20 el_dinero:-21 el_lunes:35 el_martes:-22 el_miercoles:34 el_proximo:-15 el_sedan:22 el_trabajo:35
el_viernes:-17 else:-34 else_$:-28 en:-44 en_$:-37 en__hora:-16 en__lista:26 en__sale:-17 en__tarde:45 en__trabajo:17
en_camino:-18 en_el:45 en_la:41 en_mil:-20 en_pie:47 en_punto:15 en_una:-14 end:33 end_$:22 end__the:14 entro:36
entro_$:40 era:18 era_$:15 es:-97 es_el:-16 es_eso:25 es_la:31 es_tan:-14 esa_hora:16 escribo:-14 ese_servicio:15
eso:14 eso_$:15 eso_del:14 espero:-41 espero_$:-44 esta:-15 esta_$:-17 esta__caro:-54 esta_bien:48 estamos:-32
estan:-16 estan_$:-22 estar:24 estare:84 estaria:-49 este:-30 estimate:18 estoy:-16 estoy_ahi:-17 estoy_bien:-51
eta:-44 every:-26 everything:49 everything_$:-27 everything_was:42 excelente:22 explain:-37 fallar:19 falta:48
falta_$:48 far:58 favor_$:-51 fierro:45 fin:-17 find:-38 find_a:-14 fine:-71 fine_$:-100 fine__me:40 fine_with:35
first:-26 first_thing:-27 five:-20 fix:-36 fix_it:-41 fluid:-23 flush:22 flush_$:14 for__reminder:36 for_a:-16
for_it:41 for_me:38 for_nothing:-21 for_that:-36 for_thursday:81 for_tomorrow:41 forever:-41 forget:-37 forget_it:-22
forgot:-51 four:17 free__my:15 freno_y:-14 fri:-47 friday_$:-46 friday__the:-14 friday_afternoon:46 friday_at:17
from:-38 from__rear:16 from_the:15 front:32 fue:-22 fuera:-22 fuga:-19 fui:-41 game:-22 garage:-28 get:81
get__done:123 get__in:18 get_it:73 get_there:-29 gets:25 give:-28 give_me:-18 go:88 go__and:18 go__the:-22
go_ahead:100 go_for:36 go_to:-15 going__be:-23 going__take:18 gone_$:-21 good:-56 good_$:-112 good__me:14
good__you:20 good_for:43 got:32 got_any:-50 got_it:71 got_my:20 got_to:19 gracias__avisar:-19 gracias__todo:-46
gracias_por:-61 grasa:-15 gratis:-25 gratis_$:-17 great_$:29 great__bill:-14 great__you:-54 great_another:-14
guess:76 gustaria:60 gusto:-47 gusto_$:-15 guy:-24 guys_$:14 guys_do:-18 hablan:-14 hablo:-32 hablo_$:-24
hace__ruido:28 hacer_$:-18 hacerlo:43 hacerlo_$:34 haciendo:-24 had:-58 had_to:-38 hago:-49 hago_$:-33 half:-18
happens:-14 happy:42 has:81 has__on:14 hasta__hora:24 have:-99 have__wrong:-32 have_a:-82 have_the:-37 have_to:18
hay:15 hay_problema:67 hay_que:20 he:36 heads:-30 heads_up:-30 heck:25 hicieron:-21 high:22 history:17 hit:-23 hm:-34
hmm:-51 hold:-14 home:-17 hora:-33 hora_$:-14 hora_abren:26 hour:-49 hours:-39 hours_$:-44 how:-48 how__am:15
how__are:14 how__is:-74 how__was:-20 how__will:-31 how__would:15 how_do:-37 how_i:-19 how_much:-24 hoy:-57 hoy_$:19
hoy__si:-18 hoy_mismo:-28 huele:-16 humo:-74 husband:16 i:36 i__an:75 i__at:-17 i__be:-34 i__by:14 i__come:-29
i__friday:-17 i__had:-15 i__i:-15 i__it:-43 i__know:-17 i__my:-31 i__never:-22 i__off:14 i__see:27 i__smoking:18
i__so:95 i__stop:17 i__that:-18 i__there:-33 i__to:-16 i__you:-26 i_cant:-41 i_come:-32 i_could:19 i_do:67 i_dont:-20
i_forgot:-29 i_get:-54 i_go:-28 i_guess:69 i_had:-19 i_have:-41 i_just:-17 i_moved:16 i_need:-22 i_quit:15 i_shall:15
i_should:29 i_sold:-22 i_stop:18 i_want:23 i_wont:19 i_work:-23 i_would:14 iba_a:14 id:143 id__to:66 id_like:46
id_rather:-27 idea:141 if:33 if_i:36 if_it:21 if_you:23 igual:-34 igual_$:-27 ill:123 ill__by:29 ill__there:183
ill_be:119 ill_pass:-18 ill_stop:38 ill_swing:20 im:-38 im_all:-31 im_coming:21 im_free:-19 im_good:-154 im_in:69
im_not:-30 imposible:-22 in_$:144 in__and:-14 in__garage:-14 in_friday:-15 in_law:14 in_the:-17 in_tomorrow:-17
info:-19 instead:-57 instead_$:-52 interesa:68 interesa_$:37 interest:-29 interested:60 interested_$:65 invoice:-24
invoice_$:-19 ir:-23 ir_$:-44 is:-87 is__address:50 is__cost:14 is__from:14 is__i:14 is__my:18 is__ok:-20
is__really:-22 is_a:22 is_at:23 is_been:-29 is_dead:14 is_fine:-69 is_fixed:27 is_for:-15 is_good:74 is_got:17
is_it:-74 is_my:-29 is_no:-15 is_off:-37 is_ok:-27 is_right:27 is_that:-50 is_the:70 is_this:-33 is_up:-18 is_your:38
ish:52 ish_$:39 isnt:-23 it:26 it__a:-17 it__an:-18 it__and:-34 it__at:-44 it__been:-20 it__free:-15 it__got:17
it__is:-17 it__it:23 it__me:24 it__next:-24 it__not:-27 it__on:29 it__time:24 it__under:17 it_a:47 it_anymore:-28
it_back:22 it_be:-41 it_cost:-17 it_done:36 it_has:18 it_is:82 it_ok:-18 it_on:23 it_really:-19 it_to:-29
it_tomorrow:-25 it_up:14 it_went:-17 jaja:76 jaja_$:15 jajaja:-24 jala:38 jala_para:17 jale:121 jale_$:127 jefe:23
job:15 jueves__la:22 jueves_en:22 just:-29 just__it:-21 keep:24 key:22 key_$:14 kids:-27 kind:17 know:-27
know_you:-41 la__cuando:-16 la__de:-27 la__del:22 la__esta:-23 la__lo:21 la__me:-17 la__no:-25 la__para:18 la__que:52
la_aguja:21 la_blanca:38 la_camioneta:19 la_casa:-17 la_cita:-60 la_lista:25 la_manana:-16 la_otra:45 la_pena:-14
la_primera:-14 la_sala:-15 la_semana:24 la_tarde:16 lado_$:-17 las_$:14 las_a:16 las_no:-14 las_si:-47 last:-83
last_time:29 last_week:-75 late_$:86 later:-27 law:14 le:-67 le__a:20 le__una:-19 le_caigo:26 le_digo:-29
le_falta:-14 le_sale:-78 le_voy:18 leaving:-14 left:-47 left_$:-17 lejos:-20 les:-68 let:-24 let__know:25 let_me:-21
lets:-48 lets__it:38 lets__the:-34 lets_do:37 lets_get:44 lets_out:-28 light:-17 like:17 like_a:38 like_to:37
lista:24 listo:-45 little:-29 live:22 live__the:35 live_in:24 llego:-29 llego_en:-28 lleno:-19 lleva:21 llevarlo:48
llevarlo_$:56 llevo:-46 llevo_a:-18 lo:-55 lo__asi:-15 lo__por:-31 lo_dejo:-60 lo_hago:-32 lo_llevo:-43 lo_que:31
lo_vendi:33 located:19 located_$:23 lol:32 lol_$:-15 long_$:22 long__i:25 long__it:19 long_am:15 long_will:-31
look:18 look_like:14 looking:17 los:-72 los_dos:-32 los_ninos:-23 lost:-34 lot:21 lot_$:34 loud:-14 love:25 low:-16
luego:-102 luego_$:-47 lugar:-30 lunch_$:15 lunes:17 lunes_$:-36 lunes__las:20 lunes_a:36 maam:24 made:-32
make_it:-91 makes:-17 makes_the:-15 mal:-73 mal_$:-49 malo:-31 manana_$:46 manana__la:17 mande:-18 manejando:-44
marcha:14 martes:-36 martes__la:18 martes__las:23 martes_a:23 martes_en:21 martes_pero:-59 mas:-27 mas_tarde:-18
maybe:-23 me:16 me_$:118 me__bien:-21 me__como:-50 me__con:-14 me__cuanto:18 me__el:-71 me__la:-33 me__muy:-21
me__para:-19 me__por:-16 me__que:-24 me__the:24 me__when:20 me__y:-23 me_again:-55 me_back:-17 me_cobran:21 me_da:-22
me_es:-20 me_gustaria:60 me_in:109 me_interesa:79 me_la:-38 me_off:-57 me_on:17 me_out:-17 me_parece:33 me_please:-19
me_pueden:-19 me_queda:-48 me_rayaron:-15 me_sale:-30 me_then:-14 me_to:33 me_up:114 mean:-23 mean_$:-25
mediodia_$:14 meh:-48 mejor:-27 mejor_el:-18 menos:-19 mensajes:-14 mero:-25 mi_cita:-21 miercoles:38 miercoles_$:20
might:85 mil:-42 mil_$:-21 miles:-19 millaje:-18 millas:-30 millas_$:-22 min:-145 min_$:-85 min_late:-17 mind:25
mind_$:-16 mins:-16 minutes:-22 minutos:-20 mismo:-24 mismo_dia:-28 miss:102 miss_it:114 missing:15 modo:53
monday_$:-38 monday__be:-35 monday_at:-16 money:-29 money_$:-22 month:-23 month_$:-16 more:-26 more_$:20
morning_$:-22 moved:14 much:-31 much__it:-72 much_is:-68 muchas:-21 muchas__por:-35 muchas_gracias:-21 mucho_$:-18
muy:-68 muy__con:18 muy_bien:-20 muy_caro:-38 muy_mal:-21 my:-21 my__dont:-20 my__i:16 my__out:-15 my__to:-15
my__will:28 my_arm:52 my_booking:-14 my_calendar:17 my_car:-22 my_husband:16 my_mind:-24 my_son:19 myself:-25
myself_$:-14 nada_mas:16 nearly:16 need:-60 need_$:-30 need__appointment:-22 need__back:20 need__ride:17 need_a:35
need_to:-30 needed_$:-19 needs_it:16 neither:-152 never:-33 new:63 new_$:53 next_to:14 next_week:33 ni:-62 ni__ni:-15
ni_el:-17 ni_la:-15 ni_me:-14 ni_modo:53 nice:-48 night:-54 night_$:-66 nine:42 nine_$:33 ninguna:15 ninguno:-60
ninguno__los:-46 ninguno_de:-46 ninos:-23 ninos_$:-23 no:-71 no_$:-87 no__a:-87 no__at:35 no__bien:-71
no__conmigo:-28 no__de:14 no__good:-26 no__hago:-32 no__here:39 no__interesa:-79 no__ir:-21 no__is:-57 no__it:14
no__la:-16 no__manana:-15 no__me:14 no__nada:-28 no__ninguna:15 no__no:17 no__preocupe:37 no__problema:69
no__puedo:49 no__que:-31 no__si:30 no__to:26 no_alcanzo:-15 no_complaints:52 no_gracias:-32 no_hace:15 no_hay:89
no_he:15 no_im:-33 no_it:-39 no_jala:24 no_la:16 no_le:23 no_lo:-24 no_me:-89 no_more:19 no_podre:-18 no_por:-15
no_puedo:-40 no_quedo:-37 no_quiero:-19 no_se:70 no_tengo:19 no_thanks:-27 no_that:-33 no_voy:-105 no_what:-18
no_worries:44 nobody:-15 noise_$:-16 none:-31 none__them:-28 none_of:-29 noon:30 noon_$:39 nop:-39 nop_$:-39 nos:75
nos_vemos:94 not:-38 not_$:170 not__at:18 not__to:-21 not__yet:-59 not_a:104 not_at:-15 not_coming:-45 not_going:-17
not_happy:-18 not_interested:-29 not_really:-34 not_sure:-126 not_till:-16 nothing:39 nothing_$:-21 now:-69 now_$:-63
now__me:18 nuevo:26 number:-54 number_$:-28 nunca:-22 o__en:21 of_$:-17 of__week:35 of_my:-19 of_next:20 of_them:-16
of_you:-29 off:-124 off_$:-16 off__now:-34 off__schedule:-36 off_the:-42 oh:-28 oh__another:-14 oh_great:-14
oil_change:21 ok_$:-251 ok__drive:-56 ok__i:38 ok__it:34 ok__me:27 ok_but:20 ok_friday:32 ok_is:26 ok_thanks:21
ok_to:-63 ok_yes:23 olvide:-19 on:41 on_$:94 on__for:15 on__phone:-15 on__way:-35 on_it:34 on_the:23 on_thursday:-14
on_wednesday:14 once:21 onda:25 one:-39 one_$:-15 ones:14 opinion:14 or:48 orale:27 orden:28 other:37 otra:34
otra__el:16 otra_semana:21 out:-79 out_$:-87 out__a:18 over:-15 over_$:14 overslept:-16 own:-19 papa:16 para:-32
para__de:23 para__lunes:-16 para__martes:-14 para__me:37 para__no:-27 para_alla:-23 para_cuando:16 para_un:-19
parece:16 parking:15 part:-17 pasa:-62 pasa_si:-69 pasela:-17 paso:21 paso_$:-14 pass:-37 past:-20 past_$:-20 pay:41
pay_for:16 paying:15 pedal:-14 pedi:17 pena:-16 people:15 perdida:-32 perdon:-31 perfect:-21 perfecto:41 permiso:15
pero:67 pero__el:16 pero__es:20 pero__me:19 pero__no:17 pero__que:44 pero_cuanto:-85 pero_le:-59 pero_llamenme:15
pero_no:-18 pero_que:26 pero_ya:29 phone:-39 phone_$:-27 pickup:29 pickup_$:14 pie:44 pierde:-21 pierdo:37 place:-16
plan:40 plan_$:47 please:-112 please_$:-219 please__me:-31 please_and:69 please_call:-23 please_do:94 please_dont:58
please_remove:-21 please_stop:-16 please_take:-43 pm:22 pm_$:29 podemos:-26 poder:-39 podre:-18 pongame:24 pop:19
por:16 por__el:18 por__no:172 por__tarde:-17 por__ya:15 por_ahi:-19 por_ahora:-19 por_avisar:-19 por_el:-16
por_la:-22 por_perdida:-30 por_que:100 por_todo:-40 por_unas:14 power:-16 precio:14 preocupe:37 primera:-17
problem:57 problem_$:62 problema:49 promised:-15 proximo:-15 puede:-51 puede_$:-37 pueden:-23 puedo:51
puedo_llevar:19 puedo_manana:-19 pues:70 pues_$:51 pull:14 pulled:16 pulls:-21 punto:15 puntual:14 puro:17 puse:34
put:29 put__in:26 put__on:17 put_me:44 q:-19 que:35 que_$:-45 que__abren:26 que__con:-42 que__el:48 que__eso:21
que__lo:31 que__que:21 que__si:-76 que__trabajo:-14 que_hora:-22 que_la:15 que_le:-16 que_no:150 que_pasa:-69
que_tan:-26 que_viene:29 queda:-104 queda_$:-48 quedo_$:-47 queja:21 quemado:-15 quick:24 quien:-25 quiero_$:16
quiero_ir:16 quit_smoking:18 rain:23 rather:-35 rato:18 rato_$:17 rayaron:-15 ready:112 ready_$:117 really:-37
really_$:-28 rear:20 reason:25 regreso:-14 remember:16 remember_$:16 reminder:36 remove:-23 remove_me:-18
reschedule:-46 reschedule_please:-31 right:-143 right_$:-146 ring:-26 ring_me:-23 road:-23 robot:-18 robot_$:-18
roll:28 room:16 rough:24 ruido_$:-16 running:-44 running_late:-23 sabado__a:-18 sabado_en:14 safe:17 sale:-50
sale_$:-43 sale_humo:-78 sali:-18 saliendo_$:-17 salio:-14 salir_$:14 saturday:21 saturday_morning:-15 say:140
say__th:-38 say_no:118 say_the:-38 schedule:36 schedule_$:33 school:-32 school__out:-28 school_lets:-28 scratch:-24
se:-105 se__llevo:-23 se__va:-24 se_lo:-25 se_me:-26 se_preocupe:37 se_puede:-47 se_va:-32 sea:20 sedan:93 sedan_$:22
see:305 see__then:84 see_you:259 seguro:-34 semana__viene:27 semana_que:22 send:-19 ser:-26 ser_$:-16 sera:17
servicio_$:15 set:38 set__up:49 set_it:42 shake:14 shakes:-97 shall:14 should:18 should__be:-17 si:65 si_$:-15
si__a:17 si__bien:14 si__cuanto:-76 si__dejo:-58 si__el:14 si__en:25 si__favor:39 si__interesa:29 si__jueves:30
si__lo:-18 si__lunes:32 si__martes:-22 si__me:-21 si__pero:24 si__puede:-34 si__que:46 si_cuanto:36 si_dios:-14
si_el:53 si_es:-20 si_gracias:41 si_hay:-40 si_lo:-95 si_manana:24 si_me:-29 si_no:-78 si_pero:-38 si_por:39
si_quiero:69 si_se:-33 si_senor:15 si_si:-26 si_voy:87 si_y:78 side:19 sign:107 sign__up:120 sign_me:108
sigue__pie:47 sigue_en:47 siguen:15 simon:61 sin:66 sin_aire:-14 skip:-18 skip_it:-18 slow:-20 smoke:14 smoking:18
smooth:23 smooth__butter:27 smooth_as:27 so:116 so_$:58 so_i:29 so_no:-15 so_the:-14 so_yes:31 sold:-89 sold__the:-17
sold_the:-20 somebody:-21 someone_call:19 someone_else:-19 something:-21 something__up:-25 something_came:-25
sometime:54 sorry:-44 sorry_$:-41 sound:-16 sounds:-22 sounds__a:17 sounds_good:-15 sounds_like:17 spare:16 squeal:16
start:-33 steering:-41 steering__is:-34 steering_wheel:-35 still:43 still__the:-34 still_coming:43 still_good:14
still_on:74 stop:-87 stop_$:-167 stop__at:19 stop__it:18 stop_by:48 street:25 street_$:14 suena:39 suena_bien:30
suits:-21 sure:103 sure_$:28 sure__me:33 sure_how:21 sure_thing:22 swap:-19 swing:22 swing_by:27 switch:-18 take:-48
take__off:-48 take_me:-56 talk:-27 talk__the:-15 tambien:45 tan:-28 tarda:23 tarda_$:19 tarde:-23 tarde_$:17 te:-59
te__luego:-17 te_digo:-24 telefono_$:-14 tell:-22 temprano:20 temprano_$:21 ten:-15 text:-61 text_$:-14
text__again:-48 text_me:-57 texting:-15 texting_me:-20 textos:23 textos_$:25 texts:-17 texts_$:-16 th_at:-17
thank:-24 thank_you:80 thanks_$:25 thanks__nothing:-21 thanks__the:24 thanks_for:-18 that:37 that_$:72 that__be:76
that__in:-15 that__the:15 that_car:-14 that_day:-14 that_done:47 that_in:-17 that_is:39 that_last:-57 that_was:-27
that_would:73 the:-21 the__after:-19 the__again:19 the__at:-29 the__for:-24 the__friday:17 the__going:26 the__it:19
the__need:-24 the__next:20 the__not:-19 the__now:-29 the__number:-18 the__on:17 the__one:21 the__please:-32
the__side:19 the__so:15 the__the:20 the__thing:40 the__thursday:-20 the__time:-14 the__to:-15 the__up:-30
the__was:-16 the__went:-14 the__what:19 the__wheel:-34 the_address:21 the_appointment:-62 the_bank:19 the_blue:33
the_car:-55 the_cost:17 the_front:24 the_heads:-29 the_one:18 the_other:36 the_phone:-21 the_rear:21 the_reminder:36
the_road:-22 the_schedule:14 the_seat:16 the_sedan:22 the_steering:-37 the_th:-27 the_tire:23 the_total:31
the_truck:22 the_trunk:15 the_way:-20 the_white:30 the_wrong:-35 them:-61 them_$:-42 then:84 then_$:65 there:70
there_$:121 there_at:-33 there_by:-22 there_in:-66 there_with:15 these:-30 these_days:-16 they_$:16 think:-29
think__is:48 think__it:-37 think_about:-14 think_it:51 this:-16 this_$:-33 this_friday:28 this_time:20 those:-14
though:41 though_$:32 three:-24 through:-22 thumbsup:64 thumbsup_$:64 thurs:43 thurs_$:31 thursday_at:80
thursday_morning:-28 thursdays:-22 tiempo_lo:14 tienen_$:16 tienen__el:-16 till:-15 time_$:-50 time__you:21 tipo:-19
tipo_$:-16 tire:25 to_$:-27 to__a:23 to__after:16 to__it:81 to__late:-16 to__my:-33 to__on:-23 to__that:57 to__the:35
to__to:-60 to__you:52 to_ask:28 to_be:-18 to_bring:14 to_call:28 to_change:-24 to_come:-23 to_do:-18 to_drive:-39
to_get:94 to_make:-19 to_move:15 to_my:-16 to_next:-18 to_pay:32 to_pick:18 to_set:15 to_take:21 to_that:94 to_the:33
toca:24 today:-38 today_$:-39 todo:108 todo_$:-61 todo_bien:81 todo_en:30 todos:-19 tomorrow:19 tomorrow_$:26
tomorrow_at:21 too:18 too_$:26 too__to:-15 took:-30 top_off:-16 tortillas:15 total:42 trabajo:24 traded:-17
traded_it:-15 traffic:-22 trafico:-18 trafico_$:-17 train:-14 tren:-23 tren_$:-23 troca_$:21 truck:52 truck_$:40
trunk:15 tues:-94 tues_$:-21 tuesday_$:-18 two:-41 un:-78 un__de:-14 un__y:-16 un_lado:-15 una:70 una_hora:-21
unas:14 under:21 uno:-37 unos:-29 unsubscribe:-20 up:-43 up_$:97 up__me:-14 up_and:-19 up_at:-17 use:33 usted:-18
ustedes:-55 ustedes_$:-50 va:-61 va_$:-23 va__salir:15 va__ser:-23 va_a:-23 va_el:15 va_en:-66 va_que:25 vale:-48
vamos:29 vaya:20 vegas:-40 vegas_$:-40 vemos:90 vemos_$:40 vendi_la:-17 ver:-48 ver_si:-20 very:19 vez:-29
vibrates:-33 viene:35 viernes_$:-18 viernes_no:-15 voy_$:95 voy__alla:-22 voy__camino:-16 voy__poder:-27 voy_en:-16
voy_para:-23 voy_pero:18 voy_saliendo:-21 vuelta:-19 wait:71 wait_$:89 wait__it:-19 wait_for:-14 waiting:-54
waiting_on:-14 want_to:16 was:-70 was_done:-15 was_fixed:-25 wasnt:-31 water:22 water_$:20 we:-47 we__it:-19
we__that:-18 we_are:25 we_do:-39 wed_at:20 wednesday:32 wednesdays:-21 week:-32 week_$:-27 weekend:-21 weekend_$:-19
weeks:-24 well:29 well_$:31 went:-33 went_to:-20 what_$:-44 what__i:34 what__the:67 what__your:39 what_am:23
what_are:27 what_happens:-14 what_i:-18 what_is:46 what_you:-22 wheel:24 wheel_is:-38 when:-151 whenever:19
where__you:22 where_are:23 which:-43 white:59 white_one:29 who:-50 who__this:-21 who_is:-25 why:112 why_$:-50
why__i:-30 why__you:-27 why_do:-43 why_does:-17 why_is:-20 why_not:291 why_would:-38 wife:-17 will:49 will__be:-35
will__there:72 will_be:69 will_do:137 will_it:-45 will_you:-28 winter:-16 winter_$:-14 with__i:-20 with__on:19
with_me:38 wobbles:47 wont:-22 wont__coming:-19 wont__it:50 wont__there:-48 wont_be:-54 wont_make:-15 work:-56
work_$:14 work_on:-21 works:-51 works_$:-60 worries:44 worse:-91 would:-50 would__be:-20 would__need:-36 would_be:45
would_i:-34 would_it:-17 wouldnt:71 wrong:-36 wrong_number:-22 y:35 y_$:122 y__digo:-21 y__por:31 y__va:-27
y_cuanto:79 y_la:-18 y_le:-15 y_me:-17 y_ni:-17 y_se:-18 y_si:-27 ya:106 ya_$:107 ya__hace:32 ya__la:22 ya__llego:-26
ya__me:18 ya__vendi:25 ya__voy:-27 ya_casi:-25 ya_esta:-26 ya_lo:23 ya_mero:-19 ya_no:-23 ya_que:32 ya_quedo:-18
ya_vendi:-18 ya_voy:-48 ye:106 yeah:48 yeah_$:43 yeah_no:-66 yeah_ok:29 yep:188 yep_$:19 yep__you:23 yes:472 yes_$:41
yes__am:24 yes__are:15 yes__at:20 yes__do:18 yes__how:-40 yes__i:42 yes__is:25 yes__it:-91 yes__me:31 yes__works:-54
yes__would:18 yes__you:26 yes_and:52 yes_but:-40 yes_do:23 yes_friday:30 yes_how:24 yes_i:46 yes_ill:19 yes_maam:25
yes_monday:36 yes_please:91 yes_what:16 yet:-61 yet_$:-75 yo:-60 yo_no:-28 you:34 you_$:57 you__a:-22 you__do:-21
you__is:15 you__it:130 you__me:-43 you__text:-41 you__the:-17 you_at:14 you_can:-44 you_check:16 you_do:-22
you_got:56 you_mean:-18 you_need:-18 you_people:16 you_still:-15 you_then:93 you_there:16 you_think:50
you_tomorrow:49 you_work:-21 your__hours:17 your_address:28 youre:16
"""
