"""What speaks for and against `complaint`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "complaint"
BIAS = -149
WEIGHTS = """\
#aben:-17 #abla:-18 #abra:15 #acan:70 #acar:68 #acce:61 #acci:-14 #acer:-17 #acia:-16 #acti:-51 #actu:-18 #ades:15
#adie:142 #adio:31 #ados:85 #affi:-26 #afte:37 #afue:15 #agai:26 #agan:14 #agar:-30 #agen:-24 #ager:15 #ages:-19
#agra:-14 #agua:-28 #ahor:-17 #aigo:-22 #aile:-18 #aine:17 #aint:-99 #aite:48 #aiti:27 #aken:-24 #akes:-85 #aler:-30
#algo:55 #algu:-43 #alig:-14 #alin:41 #alio:76 #alir:-34 #alit:14 #alla:-14 #alle:76 #alls:-28 #ally:76 #alwa:45
#amad:-31 #amag:14 #amar:18 #amba:37 #ambi:-17 #amen:-20 #amio:-14 #amos:-20 #anag:16 #anco:-18 #anda:-21 #ande:-30
#andl:-23 #aner:14 #ange:-30 #angi:75 #anic:-27 #anne:77 #anno:100 #anol:14 #anot:19 #answ:52 #anta:77 #anto:-14
#anym:-21 #apar:-20 #apol:34 #appi:-25 #appo:29 #appy:75 #apun:-35 #aqui:-19 #arag:-22 #aran:30 #arar:-16 #arca:-81
#arda:44 #aren:18 #arga:-20 #arge:47 #argo:14 #aria:-27 #arle:30 #arlo:-23 #arly:58 #aron:365 #arou:-21 #arra:-31
#arre:-19 #arri:-14 #arro:27 #asad:29 #asar:-34 #aske:42 #aski:23 #asnt:59 #asse:-17 #asta:-51 #aste:-56 #asti:77
#atal:19 #atar:41 #atch:22 #ated:55 #aten:54 #ater:-15 #ates:-42 #atic:-26 #atie:21 #atis:-15 #atur:-22 #augh:29
#ause:29 #auto:-42 #avia:29 #avor:-62 #ayar:20 #ayer:-14 #ayin:-44 #baby:18 #back:73 #bado:-14 #baja:-29 #bajo:15
#ball:-14 #band:-25 #bank:-37 #baro:-69 #bate:-18 #bber:15 #bebe:20 #beca:15 #befo:-24 #bein:107 #bend:-20 #best:-46
#bett:-17 #bica:-16 #bici:-15 #bien:58 #bill:235 #blan:-22 #blar:-35 #blem:-15 #bles:-27 #blue:-14 #body:147 #bols:62
#boni:45 #both:-14 #boug:-19 #brak:-74 #bran:-26 #brar:115 #bras:18 #brat:-29 #brid:-18 #brin:-16 #brok:-70 #brot:-14
#buck:45 #burn:21 #busc:-18 #busi:151 #cada:42 #call:-31 #came:39 #cand:-16 #cans:74 #cant:-90 #cara:74 #card:30
#care:16 #caro:-64 #casa:-14 #caso:14 #caus:29 #ccep:48 #ccio:-16 #cell:-30 #celo:-16 #cepc:37 #cept:37 #cesi:-55
#cham:19 #chan:51 #char:65 #chat:-14 #chec:-47 #chis:20 #choo:-18 #chos:61 #cial:-14 #cian:20 #cibi:-14 #cida:20
#cien:-35 #ciga:24 #cion:39 #cios:26 #cita:-27 #cked:58 #cker:32 #cket:41 #clam:-18 #clar:-20 #clas:41 #clie:25
#clos:-38 #cobr:97 #cole:-14 #come:88 #comi:-15 #como:-15 #comp:-127 #conf:119 #cont:31 #conv:-15 #cord:15 #corr:-19
#cort:-31 #cosa:24 #cost:-81 #coun:30 #crat:27 #crib:59 #croo:26 #ctiv:-50 #cual:-15 #cuan:-131 #cuen:38 #cuer:-29
#culo:38 #culp:32 #curi:-23 #dade:17 #dama:14 #dame:-15 #darm:-17 #daro:84 #davi:30 #deal:-22 #dece:17 #deci:-14
#deja:41 #deje:-22 #dejo:22 #dela:-19 #deme:-14 #dent:-19 #derf:66 #ders:-18 #desc:16 #desd:51 #desk:42 #desp:-25
#devo:96 #dias:21 #dici:-18 #didn:124 #died:17 #dier:48 #diff:-18 #diga:-32 #digo:-20 #dije:53 #dine:30 #dios:-28
#dirt:51 #disa:73 #dnes:-16 #dobl:23 #dond:-34 #done:-42 #door:42 #dred:31 #driv:-71 #drov:20 #dule:-37 #dura:-23
#duri:17 #duro:42 #eale:-30 #eall:98 #eant:-26 #earl:48 #ears:18 #ease:68 #eate:63 #ecal:-26 #ecau:15 #ecep:31
#eces:74 #echa:-34 #echo:20 #ecia:14 #ecid:-20 #ecio:-37 #ecla:-18 #ecue:-17 #edal:-34 #edan:-27 #eded:33 #eden:-41
#edes:85 #edne:-16 #edul:-37 #eede:33 #eeks:-25 #eels:-22 #eeps:-15 #eeri:-18 #efie:-35 #efon:31 #efor:-24 #egad:17
#egan:38 #egla:17 #egre:62 #egun:29 #eing:117 #ejam:-16 #ejar:38 #ejem:-21 #ejor:-47 #elan:-16 #elar:-15 #elef:31
#elic:23 #elle:14 #elva:21 #elve:21 #eman:15 #emin:-32 #empr:91 #enca:-25 #enci:37 #enco:-57 #ende:49 #endi:-47
#enes:-27 #engi:-17 #engo:-25 #enia:15 #enla:17 #enor:-24 #enos:28 #ensa:127 #ensi:-23 #enta:40 #ente:-15 #entl:24
#ento:38 #ents:-25 #enty:18 #eopl:109 #epai:55 #epci:37 #ephe:-18 #eply:-16 #epta:47 #eran:32 #erch:33 #erco:-14
#erda:31 #erdi:42 #ered:22 #eren:92 #eres:-49 #erfe:-14 #erfu:66 #erie:40 #erin:17 #erio:78 #ermi:-16 #erne:-29
#eron:226 #eros:114 #erri:29 #erso:-50 #ervi:20 #eryt:-64 #esar:67 #esco:27 #escr:62 #escu:-18 #esda:-28 #esde:51
#esen:-17 #esim:68 #esit:-53 #espe:128 #espu:-21 #esse:118 #essi:18 #essu:25 #esta:-42 #este:34 #esto:20 #estu:31
#eter:-27 #ethe:16 #ethi:34 #etic:19 #etie:23 #etti:47 #even:17 #ever:86 #eves:-14 #evis:-25 #evol:96 #exce:-18
#expe:27 #expl:41 #exte:-14 #extr:25 #exts:-14 #fact:-14 #falt:58 #favo:-62 #fect:-19 #feel:41 #feli:17 #fell:-21
#fend:29 #fice:18 #fier:-36 #filt:41 #fine:-25 #fini:-18 #five:25 #fixe:58 #fono:33 #fore:61 #forg:59 #form:104
#four:66 #free:-18 #fren:-34 #from:-17 #fron:24 #fter:37 #fund:-27 #fune:16 #gado:-26 #gain:26 #game:-33 #gara:-26
#gare:15 #garo:25 #garr:-30 #gast:54 #gave:32 #genc:-18 #gere:22 #gett:66 #ghwa:15 #gine:-17 #ging:80 #gist:14
#give:-48 #glar:24 #goin:25 #gone:34 #good:-102 #grad:-15 #grea:100 #gres:64 #gros:87 #gual:53 #guen:-23 #gues:-28
#guie:-31 #guna:-34 #gunt:49 #gust:65 #guys:-36 #habl:-46 #hace:-45 #hake:-28 #hang:59 #hani:-17 #hank:-74 #happ:51
#harg:61 #hast:-41 #hata:-14 #hate:22 #head:-17 #hear:-19 #heat:-20 #hech:21 #heck:-42 #hedu:-37 #heel:-22 #hell:-17
#help:-19 #here:-16 #hese:-15 #hice:-15 #high:30 #hile:34 #hing:15 #hink:-31 #hird:74 #hits:-14 #hizo:-26 #hock:34
#hoev:26 #hole:-17 #home:17 #hood:38 #hool:-18 #hora:94 #hori:-20 #hose:-23 #houg:-17 #houl:-14 #hour:50 #hous:-19
#howl:14 #hree:52 #hrou:68 #huma:-19 #hund:31 #hurs:-47 #husb:-22 #hway:15 #iado:85 #iben:49 #ibir:-24 #ible:16
#ibra:-37 #icio:-19 #icke:21 #icul:38 #idad:25 #iday:-20 #idea:-38 #ides:-14 #idnt:124 #iejo:17 #iemp:68 #ienc:26
#iend:22 #iene:-40 #iera:-17 #ierc:-14 #ierd:-18 #iere:86 #iern:-28 #iero:145 #ieve:-18 #ieza:41 #iffe:-18 #igar:24
#ight:36 #ighw:15 #igua:52 #igue:75 #igui:-20 #ijer:44 #iled:-17 #iles:-17 #illi:18 #ills:62 #ilte:22 #imes:87
#imos:-16 #inar:15 #ince:21 #inci:14 #inco:73 #inda:-15 #inde:-26 #indi:-16 #indl:-14 #indo:21 #inea:39 #ined:43
#iner:37 #infl:14 #info:-19 #ingl:17 #ingu:-32 #inis:-18 #inos:-14 #insp:-18 #inst:-20 #inte:18 #intm:-30 #ints:-48
#inut:34 #invo:35 #iona:23 #ione:-21 #ious:75 #ippe:128 #irad:-20 #ires:-16 #irve:-14 #isap:73 #ised:49 #isio:-19
#isit:138 #ismo:19 #issu:16 #ista:-47 #iste:39 #isto:-20 #itch:-15 #ited:40 #itin:25 #iven:-28 #ives:-21 #ixed:52
#jaja:-46 #jaro:46 #jeme:-21 #jero:28 #juev:-14 #june:-43 #junt:-24 #just:62 #keep:33 #keys:37 #kill:-19 #kind:-29
#king:-14 #know:-53 #lado:20 #lain:-94 #lame:-16 #lanc:-17 #lant:-15 #laro:35 #last:116 #late:-34 #lcom:19 #ldnt:51
#lefo:31 #left:160 #lega:37 #legu:15 #lema:40 #leme:-29 #leno:16 #lest:60 #lett:-19 #leva:-30 #levo:18 #lgun:-31
#lica:15 #lici:26 #lied:57 #lien:25 #life:-15 #ligh:-24 #lign:-14 #lind:20 #line:29 #list:-64 #live:-43 #llam:-16
#llas:-27 #lled:91 #lleg:37 #ller:25 #llev:-25 #lock:20 #logi:16 #look:-44 #loos:38 #lose:-24 #lost:30 #lses:17
#ltim:39 #luga:-23 #lvan:14 #lvid:-15 #lvio:14 #lway:45 #mada:-32 #made:23 #mala:50 #mall:-28 #malo:-43 #mana:20
#mand:-46 #mane:16 #mani:48 #mann:77 #many:103 #mara:-18 #marc:-75 #mate:-15 #mber:-37 #mbol:60 #mbre:-17 #mean:-34
#mech:-17 #mejo:-47 #meno:22 #mens:114 #ment:-97 #mera:14 #mero:-79 #mess:20 #meth:34 #mier:-14 #mind:-63 #mine:-19
#minu:34 #mion:-14 #mise:38 #mism:16 #miss:-21 #mist:-27 #moke:-15 #mole:60 #mond:-27 #mone:76 #mont:27 #moot:-22
#more:94 #morn:27 #moth:21 #move:-22 #mpie:14 #mpla:-105 #mple:25 #mpra:29 #mpre:151 #much:60 #nada:100 #nadi:142
#nage:15 #nail:-17 #name:-50 #nces:-16 #ncia:-20 #ncio:56 #ncon:22 #ndan:24 #ndar:-25 #nday:-32 #nden:-39 #nder:77
#ndic:-17 #ndle:-15 #ndly:-14 #ndre:31 #nece:-55 #need:-62 #neph:-18 #nera:29 #nero:40 #ners:76 #nesd:-16 #nest:17
#next:-40 #nfla:14 #nfor:81 #nfun:-38 #ngan:22 #nger:21 #ngin:58 #ngun:-31 #nigh:51 #nine:22 #ning:-26 #nino:-15
#nish:-21 #nito:25 #nner:70 #nnoy:100 #nobo:141 #noch:51 #nois:-34 #noma:36 #noth:99 #noyi:89 #nsaj:107 #nspe:-18
#nswe:52 #ntac:-28 #ntad:35 #ntan:17 #ntar:32 #ntas:44 #nted:82 #ntes:139 #ntis:-24 #ntit:17 #ntly:24 #ntme:-30
#ntra:-72 #nuev:25 #numb:-35 #nume:-64 #nunc:89 #nuto:21 #nuts:-22 #nvie:-14 #nvoi:36 #nymo:-21 #obar:-57 #obbl:-15
#oble:44 #obod:141 #obot:-14 #obra:60 #obre:15 #obro:29 #ocar:17 #oche:49 #ocke:106 #odav:30 #oday:31 #oeve:17
#offe:14 #offi:18 #oice:39 #oing:16 #oint:46 #oise:-34 #oles:46 #olog:34 #olve:17 #olvi:80 #omas:35 #omat:-22
#omer:-22 #omes:-16 #omet:26 #omis:38 #ompl:-98 #ompr:-16 #onal:20 #onda:-23 #onde:36 #oned:31 #oner:69 #ones:-19
#oney:58 #onfi:80 #onfu:-39 #onga:14 #onge:16 #onit:41 #only:-38 #onsi:-22 #onta:-23 #onte:119 #onth:29 #ontr:-65
#ooks:18 #oose:38 #ooth:-22 #open:-42 #ople:115 #oppe:-14 #oras:85 #orde:80 #orev:85 #orgo:61 #orks:-23 #orma:20
#orme:80 #orni:26 #orqu:17 #orra:-19 #orre:25 #orri:-25 #orry:-23 #orse:61 #orst:61 #orta:-16 #orth:-40 #orto:-20
#osas:17 #oser:68 #osti:16 #osto:-18 #otal:-28 #othi:80 #otro:37 #ough:23 #ould:-63 #ound:-43 #ount:29 #ours:52
#ouse:14 #ousl:80 #over:41 #owns:42 #oyin:89 #pads:-19 #paga:14 #paid:27 #pain:-14 #pair:58 #pala:16 #pano:14
#papa:-14 #para:-73 #pare:21 #pasa:-20 #paso:-23 #pass:-27 #past:-15 #payi:-41 #pcio:31 #peda:-35 #pens:-46 #peop:109
#pera:50 #perd:81 #pere:16 #perf:-14 #perm:-14 #pero:-39 #pers:-44 #pesi:68 #peto:40 #phew:-18 #phon:-16 #pier:-27
#piez:41 #ping:-22 #plai:-89 #plen:36 #plug:52 #poin:39 #poke:36 #polo:34 #pone:67 #porq:17 #pped:95 #ppin:-16
#ppoi:29 #ppre:14 #pran:32 #prec:-38 #pref:-37 #preg:49 #pren:-38 #pres:121 #pret:26 #pric:-21 #prin:20 #prom:48
#pued:-127 #pues:82 #pull:-38 #puro:66 #quar:14 #quea:-21 #qued:127 #quej:-23 #quer:17 #quic:-31 #quin:-23 #quit:-41
#quot:23 #raba:26 #rade:-29 #radi:40 #raff:-25 #rage:-14 #raig:-25 #rain:49 #raje:23 #rake:-72 #rand:46 #rang:-24
#rano:23 #rans:-15 #raro:63 #rata:57 #ratc:27 #raya:24 #rbag:-15 #rcar:-54 #rcha:26 #rdan:-20 #rdar:66 #rday:20
#rden:69 #rder:32 #reac:-14 #real:103 #reas:61 #reat:134 #reca:-27 #reci:-36 #rect:24 #recu:-17 #reem:61 #reet:15
#refi:-35 #refu:24 #rega:21 #regi:17 #regr:62 #regu:47 #reme:-14 #remi:-33 #remo:-15 #rend:-39 #reno:-28 #rent:31
#repa:59 #repl:-17 #rero:25 #reso:56 #resp:46 #ress:101 #rest:-18 #rete:24 #rett:14 #reve:76 #rfec:-14 #rful:66
#rgad:-18 #rged:114 #rgot:61 #ribe:48 #ribl:37 #ride:-20 #righ:38 #rime:16 #ring:23 #rint:25 #rios:29 #riou:76
#ripp:123 #risi:18 #rive:-70 #rmis:-19 #rned:25 #rnes:-26 #rnin:21 #roba:-60 #robo:21 #rock:-60 #roke:-70 #romi:38
#romp:14 #rong:44 #ront:16 #rook:26 #rose:72 #roso:15 #rote:37 #roth:-14 #roug:60 #roun:-23 #rove:18 #rrib:37
#rrie:-40 #rror:14 #rsda:-29 #rson:-50 #rtie:39 #rude:53 #ruid:-15 #runs:-19 #rust:132 #rvic:19 #ryin:53 #ryth:-64
#saba:-14 #saca:136 #sada:25 #said:86 #saje:113 #sale:-45 #salg:-15 #sali:60 #same:49 #sapp:73 #saro:47 #satu:-16
#sban:-22 #scan:-14 #sche:-37 #scho:-18 #scon:32 #scra:21 #scri:49 #scue:-14 #sday:-58 #seat:75 #segu:-17 #self:-17
#sell:54 #sema:15 #send:-54 #seno:-24 #sens:18 #sent:59 #seri:89 #sero:56 #shak:-31 #shoc:34 #shou:-16 #sick:107
#side:-15 #siem:71 #sien:18 #sign:-53 #sigo:24 #sigu:55 #simo:70 #sinc:35 #sing:30 #sion:-25 #sirv:-15 #sito:-49
#sits:62 #sked:43 #skin:22 #slow:30 #smok:-16 #smoo:-22 #sold:78 #some:23 #sona:-35 #soon:-34 #sorr:-22 #span:14
#spar:15 #spec:-26 #sper:86 #spet:39 #spok:36 #spue:-21 #sque:-26 #ssag:-15 #ssed:99 #sses:-16 #ssue:16 #ssur:25
#stak:-25 #stat:-22 #stea:-16 #sted:77 #stee:-18 #sten:18 #ster:68 #stic:78 #stil:109 #stop:-62 #stor:-17 #stre:21
#stri:47 #stuf:83 #stuv:32 #suen:-16 #sume:19 #swap:-19 #swer:52 #tabl:39 #tact:-28 #tada:19 #tain:22 #take:-36
#talk:-26 #tall:29 #tand:24 #tant:106 #tara:18 #tard:54 #tari:-20 #taro:30 #tarr:-14 #tart:-36 #tate:-31 #tche:42
#tech:50 #tede:85 #teen:17 #teer:-18 #tele:24 #tell:-52 #teme:-18 #temp:19 #tenc:59 #teng:-47 #tent:26 #terd:36
#tere:-46 #tern:-21 #terr:29 #tery:16 #test:86 #teve:-17 #text:136 #that:15 #them:-16 #then:-29 #ther:18 #thes:-15
#thir:73 #this:-18 #thos:-30 #thou:-15 #thre:48 #thro:60 #thur:-47 #tido:-14 #tier:78 #tigh:-32 #till:59 #tima:22
#time:167 #ting:59 #tira:-25 #tire:-47 #tive:-35 #tmen:-31 #tmrw:-22 #toca:14 #toda:79 #todo:-30 #told:98 #toma:-25
#tome:-26 #took:66 #topp:-21 #tore:-17 #tota:-28 #trab:18 #traf:-26 #trai:-48 #tran:-16 #trar:-57 #tras:-19 #trat:78
#trea:95 #tres:16 #trip:44 #trus:132 #tter:-36 #ttin:50 #tues:-27 #tuff:83 #turd:-16 #turn:-43 #tuve:69 #tuvo:25
#twic:107 #typi:22 #uand:-21 #uant:-100 #ubic:-16 #ucho:61 #ucks:46 #ueda:-23 #uede:52 #uedo:-33 #ueja:-14 #uelv:28
#uena:-28 #uent:36 #uerd:-29 #uess:-23 #uest:-16 #ueva:-18 #ueve:-28 #uevo:47 #ugar:-23 #ught:-14 #uick:-31 #uien:-66
#uier:49 #uldn:51 #ulls:-27 #ulti:39 #uman:-19 #umbe:-35 #umer:-43 #umpe:19 #unca:82 #unch:21 #unde:-35 #undr:31
#uner:16 #unos:45 #unta:36 #unte:51 #uote:23 #uran:-15 #urda:-16 #urge:-49 #urin:17 #urio:19 #urne:14 #urno:-15
#ursd:-29 #urth:22 #usba:-22 #usca:-17 #usin:-23 #usly:80 #usta:-23 #uste:79 #usto:89 #utes:17 #utom:-21 #utos:21
#vado:-16 #vale:25 #vanm:16 #varl:-17 #vece:129 #veci:-18 #vend:29 #veni:18 #vent:-20 #vera:-14 #verc:33 #veri:19
#very:-27 #vibr:-36 #vice:21 #viej:26 #vier:56 #view:21 #visa:15 #visi:125 #viso:-30 #voic:39 #volv:104 #vuel:20
#want:-16 #wapp:-14 #wasn:59 #ways:45 #wedn:-16 #week:-30 #well:-26 #were:32 #whee:-22 #when:-33 #whil:34 #whoe:26
#wice:107 #will:-76 #wipe:24 #with:67 #wobb:-15 #wond:66 #wont:-18 #work:39 #wors:123 #wort:-39 #woul:-43 #wron:45
#wrot:41 #xcel:-17 #xpec:17 #xpla:17 #xpli:24 #xted:16 #xtee:-18 #xtra:17 #yaro:20 #yest:36 #ying:88 #ymor:-21
#your:84 #ythi:-67 %again_later%agree:36 %again_later%away:-58 %again_later%bad:75 %again_later%bring:50
%again_later%busy:-52 %again_later%car:27 %again_later%car_part:98 %again_later%do_it:56 %again_later%doubt:35
%again_later%elsewhere:50 %again_later%family:-21 %again_later%gone_car:40 %again_later%leave_me:-25
%again_later%lift:26 %again_later%machine:38 %again_later%money:93 %again_later%on_way:-22 %again_later%opening:46
%again_later%pay_day:-21 %again_later%phone:70 %again_later%refuse:59 %again_later%season:-48
%again_later%shift_it:33 %again_later%staff:43 %again_later%start_again:44 %again_later%thanks:42 %again_later%who:53
%again_later%wrong_one:129 %agree:-233 %agree%away:57 %agree%bad:97 %agree%busy:-48 %agree%call_off:92
%agree%car_part:-24 %agree%doubt:-51 %agree%elsewhere:25 %agree%fails:37 %agree%gone_car:-14 %agree%how_long:26
%agree%leave_me:34 %agree%meaning:-14 %agree%message:110 %agree%money:30 %agree%noise:-16 %agree%on_way:66
%agree%opening:21 %agree%question:104 %agree%refuse:227 %agree%staff:-54 %agree%start_again:-22 %agree%thanks:-76
%away%bad:-17 %away%bring:-15 %away%car:-28 %away%car_part:-32 %away%do_it:-25 %away%how_long:18 %away%leave_me:-18
%away%odometer:15 %away%pay_day:-23 %away%phone:18 %away%question:-43 %away%season:-17 %bad:550 %bad%bring:-49
%bad%busy:24 %bad%call_off:-33 %bad%car:48 %bad%car_part:71 %bad%do_it:63 %bad%doubt:34 %bad%elsewhere:66
%bad%family:87 %bad%gone_car:39 %bad%how_long:55 %bad%leave_me:26 %bad%lift:38 %bad%meaning:-156 %bad%message:30
%bad%money:59 %bad%noise:-29 %bad%odometer:33 %bad%on_way:26 %bad%phone:71 %bad%refuse:-29 %bad%season:38
%bad%staff:232 %bad%start_again:81 %bad%thanks:37 %bad%who:17 %bad%wrong_one:48 %bring:-56 %bring%busy:-70
%bring%car_part:18 %bring%do_it:38 %bring%doubt:38 %bring%elsewhere:-18 %bring%family:-19 %bring%how_long:17
%bring%leave_me:-27 %bring%message:-18 %bring%odometer:-17 %bring%on_way:79 %bring%opening:28 %bring%refuse:-59
%bring%shift_it:-39 %bring%start_again:22 %bring%wrong_one:87 %busy:54 %busy%call_off:15 %busy%car_part:-31
%busy%elsewhere:-26 %busy%fails:65 %busy%leave_me:-26 %busy%lift:-15 %busy%message:40 %busy%money:-34 %busy%on_way:20
%busy%phone:-24 %busy%refuse:99 %busy%shift_it:-28 %busy%staff:-31 %busy%thanks:-30 %call_off:-74 %call_off%car:-53
%call_off%do_it:-100 %call_off%doubt:56 %call_off%elsewhere:42 %call_off%fails:106 %call_off%how_long:89
%call_off%machine:-19 %call_off%message:-158 %call_off%odometer:39 %call_off%on_way:22 %call_off%opening:35
%call_off%pay_day:20 %call_off%phone:37 %call_off%question:113 %call_off%refuse:54 %call_off%shake:-21
%call_off%shift_it:49 %call_off%staff:88 %call_off%thanks:21 %call_off%who:35 %call_off%wrong_one:80 %car:-48
%car%car_part:16 %car%do_it:39 %car%fails:-30 %car%gone_car:-104 %car%how_long:20 %car%lift:-31 %car%meaning:-17
%car%message:-29 %car%odometer:39 %car%on_way:28 %car%opening:17 %car%pay_day:-25 %car%place:14 %car%question:-24
%car%refuse:-111 %car%season:-24 %car%staff:-17 %car%start_again:40 %car%wrong_one:37 %car_part%do_it:54
%car_part%elsewhere:18 %car_part%fails:-58 %car_part%how_long:35 %car_part%leak:-22 %car_part%leave_me:-31
%car_part%lift:25 %car_part%meaning:-20 %car_part%message:-30 %car_part%noise:-23 %car_part%odometer:-34
%car_part%opening:23 %car_part%phone:44 %car_part%place:-23 %car_part%question:-49 %car_part%refuse:87
%car_part%shift_it:25 %car_part%smoke_smell:-22 %car_part%staff:133 %car_part%start_again:26 %car_part%thanks:82
%car_part%who:42 %car_part%wrong_one:59 %do_it:-44 %do_it%elsewhere:-91 %do_it%gone_car:-46 %do_it%how_long:51
%do_it%leak:-18 %do_it%leave_me:15 %do_it%lift:21 %do_it%meaning:31 %do_it%message:-62 %do_it%money:43
%do_it%on_way:-17 %do_it%opening:21 %do_it%pay_day:-21 %do_it%phone:19 %do_it%question:21 %do_it%refuse:157
%do_it%season:-35 %do_it%shift_it:-46 %do_it%staff:-24 %do_it%thanks:42 %do_it%who:30 %doubt%elsewhere:-14
%doubt%gone_car:51 %doubt%how_long:67 %doubt%message:-69 %doubt%money:81 %doubt%on_way:31 %doubt%question:19
%doubt%shift_it:56 %doubt%start_again:-19 %elsewhere%fails:-18 %elsewhere%family:-20 %elsewhere%gone_car:-15
%elsewhere%leave_me:-14 %elsewhere%message:54 %elsewhere%money:110 %elsewhere%noise:-14 %elsewhere%pay_day:-20
%elsewhere%place:-17 %elsewhere%question:125 %elsewhere%refuse:-98 %elsewhere%season:-39 %elsewhere%shift_it:64
%elsewhere%start_again:-32 %elsewhere%wrong_one:-47 %fails:-117 %fails%family:-19 %fails%how_long:-36
%fails%leave_me:-30 %fails%meaning:-15 %fails%message:-37 %fails%odometer:-17 %fails%on_way:-16 %fails%phone:19
%fails%refuse:82 %fails%staff:-33 %fails%thanks:-21 %fails%wrong_one:-37 %family:-31 %family%gone_car:-28
%family%how_long:18 %family%message:16 %family%money:61 %family%on_way:-19 %family%shift_it:-31 %family%staff:-15
%family%start_again:-14 %gone_car:-88 %gone_car%leak:14 %gone_car%lift:22 %gone_car%message:-26 %gone_car%on_way:23
%gone_car%phone:18 %gone_car%question:70 %gone_car%shift_it:19 %gone_car%thanks:26 %gone_car%wrong_one:60
%how_long:48 %how_long%on_way:67 %how_long%opening:35 %how_long%phone:31 %how_long%question:-50 %how_long%refuse:40
%how_long%shift_it:20 %how_long%wrong_one:47 %leak%refuse:19 %leave_me:-38 %leave_me%lift:16 %leave_me%message:-39
%leave_me%on_way:55 %leave_me%pay_day:85 %leave_me%question:35 %leave_me%refuse:-17 %leave_me%season:76
%leave_me%start_again:-32 %leave_me%who:20 %lift:56 %lift%money:29 %lift%odometer:29 %lift%on_way:-27
%lift%opening:76 %lift%pay_day:43 %lift%phone:19 %lift%question:-43 %lift%thanks:16 %lift%wrong_one:19 %machine:39
%machine%meaning:-18 %machine%message:23 %machine%refuse:42 %meaning:-131 %meaning%money:37 %meaning%on_way:77
%meaning%phone:-63 %meaning%question:-41 %meaning%refuse:-74 %meaning%staff:15 %message:91 %message%money:-26
%message%odometer:-21 %message%on_way:202 %message%pay_day:64 %message%phone:-59 %message%refuse:-101
%message%season:70 %message%shift_it:85 %message%staff:-15 %message%start_again:-221 %message%thanks:-26
%message%who:-37 %message%wrong_one:-54 %money:166 %money%odometer:139 %money%on_way:-44 %money%pay_day:114
%money%phone:41 %money%question:23 %money%refuse:-48 %money%shift_it:98 %money%staff:33 %money%start_again:53
%money%thanks:113 %money%wrong_one:70 %noise:-102 %noise%question:-17 %noise%refuse:16 %noise%shift_it:-15
%noise%start_again:-14 %odometer:58 %odometer%pay_day:51 %odometer%phone:-42 %odometer%question:-33
%odometer%refuse:65 %odometer%season:14 %odometer%shift_it:-28 %odometer%staff:-27 %odometer%start_again:46
%on_way:20 %on_way%opening:43 %on_way%phone:48 %on_way%place:-20 %on_way%question:41 %on_way%refuse:-56
%on_way%smoke_smell:-20 %on_way%staff:27 %on_way%who:25 %opening:-18 %opening%phone:16 %opening%question:-54
%opening%refuse:22 %opening%wrong_one:22 %pay_day:-16 %pay_day%phone:29 %pay_day%place:14 %pay_day%question:-20
%pay_day%refuse:15 %pay_day%shift_it:-35 %pay_day%staff:-15 %pay_day%start_again:14 %phone:-44 %phone%place:14
%phone%question:-86 %phone%refuse:47 %phone%shift_it:-40 %phone%staff:14 %phone%start_again:56 %phone%who:60
%place:-87 %place%question:-22 %place%refuse:15 %place%staff:-16 %place%wrong_one:80 %question:-36
%question%refuse:-21 %question%shift_it:88 %question%staff:16 %question%start_again:-69 %question%thanks:21
%question%who:-88 %question%wrong_one:28 %refuse:-19 %refuse%season:26 %refuse%shift_it:-44 %refuse%staff:133
%refuse%start_again:91 %refuse%thanks:47 %refuse%who:-43 %refuse%wrong_one:-18 %season:-30 %season%shift_it:-52
%season%thanks:29 %shake:-89 %shift_it:-35 %shift_it%start_again:-41 %shift_it%thanks:25 %shift_it%wrong_one:-21
%smoke_smell:-84 %staff:53 %staff%thanks:-53 %start_again:-106 %start_again%who:54 %start_again%wrong_one:52
%thanks:-28 %who:-77 %who%wrong_one:-15 %wrong_one:-36 @?:-192 @after_visit:257 @after_visit_cant_complain:-44
@car:-82 @confirm:-86 @day:-119 @later:-53 @nothing:33 @offers:-153 @reading:-49 @time:-138 @walk_in:-47 ^_$:-24
^_a:-93 ^_al:-27 ^_all:-37 ^_and:-24 ^_any:-37 ^_are:-45 ^_as:-14 ^_been:34 ^_bendiciones:-14 ^_better:-23 ^_bien:-15
^_brakes:-35 ^_cada:29 ^_call:-33 ^_can:-121 ^_cancel:25 ^_cant:-66 ^_car:-44 ^_como:-58 ^_cost:-26 ^_could:-35
^_couldnt:26 ^_cuando:-24 ^_cuanto:-92 ^_de:-91 ^_dejeme:-21 ^_did:-41 ^_do:-81 ^_enough:-55 ^_es:25 ^_ese:-18
^_esta:-45 ^_estoy:25 ^_every:28 ^_everything:-53 ^_fine:-25 ^_friday:-17 ^_give:-16 ^_got:-19 ^_gracias:24
^_great:79 ^_hableme:-15 ^_hasta:-17 ^_have:-17 ^_hey:-28 ^_hm:-23 ^_how:-69 ^_i:48 ^_ill:-19 ^_im:-36 ^_in:-20
^_is:-141 ^_it:-44 ^_just:-27 ^_la:72 ^_last:68 ^_le:23 ^_let:-47 ^_llevo:18 ^_lo:-38 ^_lol:20 ^_los:-16 ^_me:20
^_mejor:-21 ^_mi:-17 ^_mil:26 ^_my:-90 ^_need:-16 ^_ni:16 ^_no:23 ^_nobody:26 ^_nop:21 ^_not:32 ^_nunca:96 ^_oh:100
^_oil:-39 ^_ok:-25 ^_one:92 ^_only:-23 ^_otra:17 ^_otro:92 ^_para:-14 ^_please:39 ^_por:28 ^_prefiero:-29 ^_price:-14
^_pues:67 ^_puro:44 ^_put:-19 ^_que:19 ^_quede:86 ^_quedo:-42 ^_quiero:23 ^_runs:-17 ^_sale:-22 ^_scratch:-19
^_se:-35 ^_she:-14 ^_si:-79 ^_siempre:72 ^_someone:18 ^_son:80 ^_still:80 ^_take:-17 ^_text:-43 ^_thank:-27
^_thanks:58 ^_that:-24 ^_the:179 ^_this:130 ^_todavia:17 ^_today:-19 ^_todo:-106 ^_too:-36 ^_took:30 ^_ustedes:37
^_uy:31 ^_voy:-18 ^_wait:-14 ^_we:-18 ^_what:-14 ^_when:-22 ^_where:16 ^_why:87 ^_will:-19 ^_works:-18 ^_would:-16
^_wow:52 ^_wrong:15 ^_y:-50 ^_ya:-117 ^_yep:-37 ^_yes:-81 ^_yo:-27 ^_you:141 ^_your:125 a:69 a_$:-50 a__after:18
a__at:-16 a__car:26 a__de:17 a__en:-15 a__for:-25 a__i:20 a__is:69 a__me:-20 a__no:-16 a__off:126 a__taller:-18
a__time:-26 a__to:-17 a__y:-18 a_car:-17 a_good:-31 a_guy:-20 a_ir:-14 a_la:-20 a_las:-16 a_mechanic:-22 a_month:60
a_person:17 a_phone:17 a_price:-20 a_que:-31 a_rip:125 a_ver:24 a_week:87 about_the:33 about_to:21 ac:-15 after:48
after_$:-25 after_you:34 afuera:15 again:26 agencia:-16 agencia_$:-15 agua:-20 agua_$:-14 ahi:-37 ahi_$:-41
ahorita:-19 al:-89 al_cien:-31 al_rato:-15 algo:66 alguien_$:-16 all:15 all_$:-51 all__my:37 all_day:39 all_good:-37
all_i:24 all_over:45 already_$:-22 alta:-17 always:45 am:-41 am_i:-16 an_hour:14 and:169 and__car:-16 and__dont:-36
and__has:21 and__it:-19 and__like:24 and__me:-15 and__the:14 and__want:19 and__you:-22 and_can:-14 and_could:-16
and_did:22 and_how:-16 and_i:-18 and_im:22 and_it:49 and_my:16 and_nobody:75 and_the:28 and_what:-22 and_you:51
ando:-30 annoying:89 anos:16 another:20 another_bill:33 another_day:-16 answer:27 antes:25 antes_$:53 any:-75
anymore:-21 appointment:-27 appointment_$:-23 appreciate:17 appreciate_it:27 are:-98 are_$:-14 are__hours:-18
are_they:-15 are_your:-20 around:-20 arreglaron:27 as:-73 as_i:-14 as_well:-42 asi:25 ask_me:-28 asked:43
asked_for:41 asking:23 at:23 at_$:-38 at__counter:58 at__the:66 at_all:-29 at_and:-26 at_the:-25 at_this:-17
at_work:22 at_your:32 atencion:59 aviso:-21 aviso_$:-16 baby:21 back:54 back_$:65 back__for:27 back__the:-18
back_in:-15 back_on:27 bad:-156 bad_$:-131 baja:-14 bank:-36 basta_con:-14 bateria:-17 be:-45 be__there:-18
be_there:-17 bebe:20 because:15 been__your:-17 been_to:-17 before:-24 before_$:-17 before_i:-17 being:107
bendiciones:-16 best:-46 best_$:-45 better:-17 better_$:-14 bien:45 bien_el:35 bien_gracias:-24 bill:156 bill_$:46
bill_was:47 blue:-14 bonito:32 book:-16 booking:20 bought:-19 bought_it:-16 brake:-24 brakes:-47 brakes_feel:-31
broke:-51 broken:-19 brother:-14 bucks:47 bumper:21 burned:20 but:-100 but_not:16 but_the:-30 but_what:-19 by:-53
by_the:-41 cada:24 call:-70 call_$:-21 call_me:-54 called:67 called__back:57 called_me:57 came:43 came_on:24 can:-194
can__me:-30 can__send:-22 can_i:-37 can_you:-94 cancel:20 cancelen:21 cancelo:-16 cant:-84 cant_complain:-49 cap:34
car:90 cara:57 card:33 care_of:-19 caro:-36 caro_$:-20 carro:15 carro_$:28 casa:-14 caso:14 caso_$:15 cell:-18
changed:-14 changed__mind:-22 changed_my:23 changing:81 charge:-51 charge_for:-31 charged:81 charged__for:23
charged_me:37 check:-36 chiste:24 cien:-32 cien_$:-29 cita:-24 close:-27 close_$:-18 cobran:-21 cobran_$:31
cobran_por:-42 cobraron:79 cobraron__mas:25 cobraron_de:25 cobro:29 come:81 come_back:31 come_in:39 comes:-16
coming:-15 como__mi:-21 como__que:-17 como_la:18 complain:-49 complain_$:-44 complaints:-61 con:116 con__que:21
con__trabajo:19 con__y:27 con_el:44 con_ese:15 con_la:26 con_lo:23 con_los:-26 con_un:29 con_ustedes:52 contact:-21
contento:19 correcto:14 corto:-20 cosas:17 cost:-47 cost_$:-19 costo:-18 could:-42 could_you:-62 couldnt:37
couldnt_be:31 count:-14 counter:63 cuando:-21 cuanto:-116 cuanto__el:-33 cuanto_cobran:-14 cuanto_dura:-15
cuanto_me:-33 cuenta:32 customer:-20 cut:-15 da:-80 dan:19 dar:-21 dash:-14 day:-35 day_$:-46 day_i:19 de:17 de_$:-22
de__carro:17 de__como:18 de__es:21 de__llanta:43 de__lo:21 de__manana:22 de__no:-27 de_dinero:-26 de_la:40 de_las:-36
de_los:-16 de_mas:44 de_mi:16 de_nuevo:-16 de_que:-48 de_regreso:37 de_semana:18 dealer:-28 dealer_$:-14 dejaron:53
dejeme:-21 del_trabajo:-14 desde:51 desde_que:47 desk:42 despues:-21 despues_$:-15 dia_$:24 dia__la:14 dias:21
dias_$:15 dice:-16 did:-54 did_my:30 did_that:-39 did_the:-15 did_you:-47 didnt:124 died:17 dieron:24 digo:-19
dijeron:29 dinero:30 dinero_$:-17 dios:-27 direccion_$:-16 do:-169 do__charge:-27 do__guys:-18 do__have:-24
do__keep:69 do_i:-30 do_it:-18 do_my:-29 do_not:-22 do_you:-29 doble:25 don:-16 donde:-33 donde_quedan:-17 done:-39
dont__me:78 dont__you:84 dont__your:-65 dont_have:-28 dont_know:-34 dont_text:70 door:37 door_$:14 dos:115 dos_$:15
dos_veces:94 down_$:15 drive:-49 drive_$:-23 drives:-20 drives_like:-19 drop__at:-14 drop_me:-15 drove:20 dura:-16
duro:42 early:52 early_$:62 eh:16 el:77 el__a:-17 el__con:17 el__dia:-20 el__no:26 el__por:-16 el__se:-17 el__y:42
el_carro:50 el_dia:53 el_dinero:-15 el_encargado:-18 el_freno:-14 el_gerente:22 el_martes:-17 el_mismo:15
el_muchacho:16 el_numero:-47 el_otro:-33 el_precio:-18 el_servicio:-18 el_telefono:59 el_trabajo:72 el_viernes:-16
else:-19 elses:17 en:-26 en__manana:-15 en__noche:58 en__taller:-37 en_el:-25 en_otro:-40 encargado:-18
encargado_$:-18 engine:-17 enough_$:56 era:32 es:-32 es_$:-35 es__mismo:29 es_de:-14 es_el:-17 es_lo:26 es_un:51
esa:16 escriban:18 escriban_$:-33 escriben:49 escriben_$:-22 ese:-98 ese_carro:-14 ese_servicio:-43 eso:-38 eso_$:-16
eso__lo:14 espanol:14 esperando:47 esperar_$:-15 espere:43 espero_$:-15 esta:-136 esta_$:-41 esta_muy:-32 estan:-19
este:-14 esto:-15 esto_$:-25 estos:-18 estos_mensajes:-15 estuvo:26 even:28 ever:25 every:44 every__i:49
every_time:36 everything:-64 everything_was:-43 factura:-14 falta:21 far:-40 favor:-62 favor_$:-48 feel:58
feel_like:22 feels:-19 fell:-15 feo:24 few:-15 fin:14 fin__semana:19 fin_de:16 fine:-25 fine_$:-35 first_$:-26
five:25 fix:23 fix_it:22 fixed:58 fixed_it:18 for:101 for_$:17 for__i:34 for__me:-23 for__oil:22 for_a:23 for_an:14
for_it:-18 for_me:-78 for_nothing:115 for_that:39 for_the:24 for_this:-24 for_what:23 forever:85 forgot:61
forgot_to:66 four:36 freno:-34 friday__the:14 friday_and:22 from:-17 from_the:20 from_you:-27 from_your:-14 front:24
front_desk:48 fue__que:-29 fue_lo:-29 fui:55 funeral:16 game:-15 garage:-22 gas:-14 gave:32 gave_me:20 gente:17
gerente:22 get:-69 get_a:-22 get_it:22 get_my:-36 get_paid:-18 getting:66 give:-47 give__a:-22 give_me:-38 going:25
going__be:-14 going__take:14 going_to:-47 gone:34 gone_$:19 good:-102 good_$:-36 got__wrong:-35 got_a:-29 got_my:34
got_the:-31 got_to:-19 gracias_$:-56 gracias_a:-17 gracias_por:81 grease:50 grease__over:46 grease_all:46 great:38
great_$:-42 great__bill:33 great__you:23 great_another:33 guess:-23 gusto:96 guy_$:-36 guy__the:18 guys:-35 guys_$:33
guys_do:-26 hablar:-50 hablar_con:-43 hableme:-24 hace:-23 had:64 had_to:34 happy:70 happy_$:-22 has:48 has_a:14
hasta:-41 hasta_que:-22 hate:25 have__manager:18 have__say:15 have__wrong:-30 have_a:-21 have_been:20 have_had:17
have_my:-18 have_never:-23 have_no:37 have_the:-19 hay:-36 hay_que:-15 he:-59 help:-19 here:-29 here_$:-39 hey:-28
hice:-15 high:-26 highway:15 hits:-14 hizo:-26 hm:-23 home:17 home_$:-14 hood:38 hood_$:21 horas:85 horas_$:46
hours:52 how__the:-15 how__was:45 how_bad:-23 how_i:54 how_is:-14 how_many:-28 how_much:-32 hoy:26 human:-16
hundred:31 husband:-22 i:116 i__a:-16 i__drive:-22 i__for:20 i__had:23 i__know:-27 i__like:15 i__my:-80 i__never:-45
i__paid:-15 i__so:-27 i__that:14 i__the:-27 i__to:-17 i__up:-19 i__with:21 i__you:27 i_am:-19 i_came:27 i_changed:-17
i_come:50 i_do:-33 i_dont:22 i_feel:64 i_get:-52 i_got:42 i_guess:-22 i_have:23 i_just:-19 i_left:51 i_live:-34
i_need:-39 i_never:-18 i_paid:50 i_said:-18 i_sold:-16 i_think:-35 i_want:30 i_was:165 i_will:-21 idea:-38 if:14
if_i:-17 if_you:20 igual:55 igual_$:50 ill:-36 im:47 im__a:-16 im__of:57 im__the:-18 im__work:45 im_at:53 im_not:-22
in:28 in_$:-42 in__and:46 in__car:41 in__is:46 in__morning:86 in_a:-38 in_another:-35 in_it:73 in_june:-41
in_march:14 in_my:40 in_the:73 info:-19 info_$:-16 inspection:-17 instead_$:-20 interesa:-28 interesa_$:-21
interested:-16 into_the:-19 invoice:36 is_$:-61 is__a:-98 is__again:16 is__bad:-20 is__how:15 is__i:23 is__new:52
is__of:16 is__the:14 is_a:31 is_all:17 is_getting:66 is_gone:20 is_in:18 is_it:-52 is_my:-21 is_not:-16 is_plenty:18
is_something:49 is_still:18 is_texting:-17 is_that:-31 is_the:25 is_there:-33 is_this:-51 is_tight:-34 is_wrong:25
is_your:-33 it:-23 it_$:-15 it__a:-24 it__in:30 it__not:30 it__ok:-36 it__on:-16 it__to:-26 it__too:15 it_back:-30
it_in:-26 it_is:98 it_out:-17 it_says:14 jaja:-34 jala:-14 job:-28 jueves:-14 june:-43 june_$:-46 just:47 k_$:-18
keep:46 keep__me:61 keep_texting:59 key:15 key_$:16 keys:37 keys_$:21 kid:21 kinda:-14 kindly:-14 know:-51 know_$:-25
know_what:16 know_you:-38 la:98 la__el:-14 la__es:21 la__la:-14 la__no:22 la__pasada:27 la__que:-28 la__si:-15
la__vez:109 la__y:-19 la__ya:-18 la_agencia:-16 la_atencion:41 la_bateria:-16 la_cara:55 la_casa:-20 la_cita:-20
la_cuenta:28 la_factura:-14 la_lista:-20 la_llamada:-24 la_llanta:28 la_luz:-17 la_manana:19 la_noche:66 la_otra:67
la_primera:18 la_tarde:-23 la_ultima:28 la_verdad:21 las:-52 las_$:-20 las__la:30 las_de:31 las_llantas:-30 last:112
last__and:48 last__you:39 last_month:-31 last_night:-42 last_time:201 last_week:-68 late_$:-43 later:-42 later_$:-24
law:-15 le:-129 le__a:25 le__el:-17 le_hicieron:-60 le_voy:19 left:160 left_$:-26 left_a:83 les:24 let:-59 let_me:-41
life:-14 light_$:25 light__on:25 lights:-14 line:-21 list:-38 list_$:-32 lista:-22 lista_$:-14 live:-36 live_in:-34
llamada:-30 llamada_$:-37 llame_el:-14 llanta:15 llanta_$:26 llantas:-19 llantas_$:-27 llegue:18 lleno:16 lleno_de:17
llevo:18 lo:-81 lo__a:-31 lo__ahi:15 lo__con:42 lo__de:15 lo__el:-27 lo__en:-21 lo__me:22 lo_de:16 lo_hicieron:-53
lo_hizo:-24 lo_mismo:19 lo_que:36 locked:21 lol:-56 lol_$:-21 long_is:17 longer:17 look:-14 looking:-20 loose:38
loose_$:45 los:-128 los__me:-14 los_frenos:-17 los_mensajes:-69 lost:30 lost_my:44 lot:71 lugar:-23 lunes_$:-15
luz:-20 made:23 mal_$:-58 mal_el:-33 mall:-27 malo:-41 manager:16 manager__me:14 manager_call:15 manana_$:-28
mandan:26 mandar:-18 mandaron:14 manden:-30 manden_nada:-31 many:103 many_texts:135 mas:57 mas_$:21 mas__menos:25
mas_mensajes:-30 mas_o:25 mas_que:37 mas_tarde:-15 may:-20 me:147 me_$:-86 me__algo:73 me__cambiaron:-16 me__como:41
me__dar:-18 me__el:45 me__en:48 me__esperar:34 me__hicieron:-46 me__im:36 me__in:37 me__june:-40 me__la:49
me__las:-22 me__like:14 me__mal:48 me__mas:-62 me__mensajes:50 me__my:-24 me__nada:52 me__que:18 me__the:15
me__una:29 me__y:17 me__your:-21 me_about:-35 me_after:-16 me_again:-76 me_and:-31 me_at:30 me_back:29
me_cambiaron:16 me_cobraron:75 me_da:-70 me_dejaron:56 me_dejo:19 me_dieron:16 me_escriban:33 me_escriben:49
me_espero:-16 me_for:53 me_hicieron:77 me_in:-69 me_interesa:-28 me_la:-39 me_llame:-21 me_lo:-46 me_manden:-23
me_off:-72 me_paguen:-21 me_please:-21 me_puede:-19 me_pueden:-26 me_quede:-23 me_quedo:-19 me_rayaron:20
me_robaron:-25 me_salio:76 me_so:120 me_then:-16 me_tienen:23 me_today:29 me_trataron:31 me_up:-25 me_urge:-43
me_with:-16 meant:-24 mecanico_$:-20 mechanic:-14 mechanic_$:-19 meh:53 mejor:-46 menos:22 mensaje:103 mensaje_$:37
mensajes_$:-45 mensajes__vez:-14 mensajes_otra:-14 mes:-18 messages:-18 messages_$:-18 mi:79 mi__de:47 mi_carro:28
mi_telefono:-30 mil_gracias:18 miles_$:-17 mind:-31 minutes:17 minutos:21 mis:25 mismo:26 mismo_dia:-21 molesto:34
monday:-26 monday_$:-14 money:61 money_$:38 money__tight:-35 money_is:-35 month:27 month_$:-41 month_is:85 more:115
more_$:-27 more_texts:-32 more_than:17 morning:37 morning_$:70 mother:17 much_$:26 much_for:15 muchacho:15 mucho:15
must_have:-26 muy:104 muy_caro:-25 muy_mal:24 my:189 my__and:14 my__back:70 my__go:15 my__has:30 my__in:28 my__is:-34
my__not:-14 my__refund:-65 my_car:165 my_cell:-18 my_day:-20 my_hood:22 my_husband:-18 my_mind:-27 my_mom:17
my_name:-21 my_nephew:-18 my_oil:49 my_old:-14 my_phone:-18 my_rim:17 my_seat:52 my_tax:-67 my_tire:-15 my_tires:25
nada:94 nada_$:112 nada_de:-16 nadie:142 nadie_me:57 name:-36 necesito:-49 necesito_que:-18 need:-96 need_a:-19
need_to:-33 needed:33 needed_$:-28 nephew:-18 never:17 never__me:24 never__to:-21 never_been:-33 never_want:-15
new_$:23 next:-40 next_week:-14 ni:67 ni_me:47 night_$:21 nine:22 ningun:-18 ninos:-14 no:28 no_$:-15 no__a:-21
no__at:-39 no__bien:81 no__con:24 no__de:-27 no__dinero:-16 no__en:64 no__escriban:50 no__here:-31 no__la:-16
no__lo:14 no__manden:-18 no__me:16 no__mensajes:-32 no__nada:41 no__ningun:-14 no__no:-14 no__puedo:-25 no__texts:-33
no__the:20 no__what:-15 no_but:-17 no_complaints:-61 no_es:-39 no_esta:-16 no_hay:-18 no_he:-16 no_it:17 no_me:60
no_more:-58 no_one:41 no_quedo:89 no_quiero:-26 no_se:56 no_soy:-35 no_tengo:-33 no_traigo:-14 no_y:29 no_you:75
nobody:141 noche:57 noche_$:68 noise:-34 nomas:36 nop:20 nop_$:21 not:96 not__and:-18 not__car:-54 not__customer:-17
not__it:35 not__me:-32 not__now:-24 not__the:-22 not__this:-22 not__to:-23 not_a:-40 not_for:-23 not_going:82
not_happy:120 not_my:-64 not_now:-18 not_really:66 not_right:-18 not_the:-27 not_today:-37 nothing:80 nothing_$:127
now:-130 now_$:-50 nueva:-14 nuevo:48 nuevo_$:54 number:-34 number_$:-32 number_again:14 numero:-64 numero_$:-51
nunca:89 nuts:-22 o_menos:25 of:142 of_my:19 of_the:-33 off:84 off_$:147 off__list:-15 off_the:-16 office:18 oh:97
oh__another:50 oh_great:33 oi:15 oil:49 oil_$:27 oil_light:30 ok_but:-35 old:-34 on:-23 on_$:-34 on__th:-16
on__way:-23 on_my:27 once:22 one:79 one_$:-21 only:-38 only__me:-20 open:-37 open_today:-18 opt:-17 or:-46 other:-23
otro:37 otro_dia:-17 otro_mes:-15 otro_taller:-54 out:-23 out_$:-23 out__my:42 out__the:-22 out_last:-14 out_of:35
over_my:33 overcharged:33 owns:17 pads:-19 pague:32 paguen:-21 paid:30 paint:-14 papa:-14 paper:15 para:-70
para_el:-21 para_que:-24 para_un:16 part:28 pasada:26 pasar:-34 paso:-23 pass:-15 pay_for:33 paying:-41 pedal:-31
people:109 pero:-45 pero_no:-17 person:-17 persona:-31 persona_$:-22 pesimo:68 phone:-14 picked:24 pie:-15 pieza:28
place_$:17 plan:-18 please:17 please_$:-40 please_dont:19 plenty:18 plug:48 poner:76 por:27 por__el:35 por__me:70
por__no:-74 por_donde:-22 por_favor:-57 por_la:-21 por_nada:80 por_que:38 por_su:16 por_un:14 porque:17 precio:-65
precio_$:-27 precios:15 prefiero:-35 prefiero_que:-15 preguntar:23 prende:-19 prende_$:-15 price_$:-21 primera:14
problem:17 problem_$:17 promised:39 puede:-28 pueden:-41 puedo:-53 pues:92 pues_$:21 pulls:-27 punto:24 puro:24
put:48 put_me:-23 put_the:40 quarter:15 que:130 que_$:-40 que__con:62 que__de:127 que__el:-14 que__es:-16
que__ese:-34 que__hicieron:-22 que__llame:-15 que__lo:-34 que__mal:-53 que__me:21 que__no:22 que__otra:17
que__por:-20 que__trabajo:18 que_es:-55 que_fue:-23 que_hora:-15 que_le:-60 que_me:-32 que_no:-26 que_precio:-22
que_tan:-71 que_tanto:38 quedan:-18 quede:121 quede_muy:89 quedo:21 quedo_$:20 queja:19 quick:-31 quien:-28
quienes:-27 quienes__ustedes:-17 quienes_son:-27 quieren:99 quiero__de:-31 quiero__me:-29 quiero_nada:-24
quiero_que:-30 quiero_recibir:-15 quisiera:-15 quit:-18 quote:23 quote_$:68 radiador_$:14 radio:31 rato:-15
rayaron:20 ready:-19 ready_$:-18 really:98 really_$:94 recibir:-23 regreso:50 remember:-19 remember_$:-19
remind_me:-19 reminders:-16 repair:58 reply:-16 respeto:40 right:35 right_after:33 right_now:-32 ring:23 ring_me:20
rip:125 robaron:-57 robaron_la:14 robo:35 rock:-60 room:15 room_$:-17 rude:53 runs:-19 saben:-17 said:86 sale:-62
sali:21 salio:76 salir:-34 salir_$:-16 same:54 saturday:-14 schedule:-47 school:-14 scratched:25 scratched_my:25
se:-45 se__de:17 se_lo:-17 se_me:-53 seat:52 seat_$:44 see:-58 see_you:-21 sell:46 semana_$:15 send:-48 send_me:-29
senor:-25 sent:22 ser:25 service:26 set:-26 shakes:-26 she:-18 shop:15 shop_$:-34 shop_is:34 should_i:-18 si:-76
si__bien:-25 si__me:16 si_y:-20 sick:107 siempre:71 siempre_$:-15 siento:20 sign:-27 sign_me:-21 sigo:25 sigue:81
sin:30 since:35 six:23 slow:32 slow_down:18 smoke:-15 so:101 so_$:-29 so_no:15 sold:-17 some:20 someone__me:-20
someone__my:14 something:34 son:83 son_$:-18 son_ustedes:-17 soon:-29 sorry:-22 soy:-71 soy__persona:-23 soy_la:-14
speak_with:-16 start:-19 state:-25 steering:-18 still:111 still__about:51 still__on:67 still__the:-44 stop:-36
stop_$:-25 stop__me:23 stop_texting:22 stopped:-15 street:15 stuff:83 stuff_$:50 suena:-16 sure:-26 sus:20
swapped:-14 take__off:-54 take_me:-54 talk:-21 talk_to:-17 taller:26 taller_$:50 tan__esta:-47 tan_mal:-21
tan_malo:-31 tanto:104 tardan:-19 tarde:15 tax:-81 tax_refund:-68 te:-14 tech:39 telefono:33 telefono_$:24 tell:-47
tell_me:-38 temprano:35 temprano_$:45 ten_$:19 tengo:-24 terrible:29 text:160 text_$:-17 text__about:-23
text__again:-52 texted:16 texting_$:-19 texting_me:68 texts:-14 texts_$:14 texts_again:-17 th:-46 th_$:-27 than:63
thank:-74 thank_you:-73 thanks_$:-45 thanks__nothing:115 thanks__the:-21 thanks_a:19 thanks_for:61 that:15 that_$:-69
that__text:29 that__the:26 that_car:-14 that_last:-27 that_one:-18 the:21 the__again:-15 the__and:-29 the__as:-14
the__at:15 the__car:21 the__day:-15 the__guy:-40 the__in:18 the__last:-32 the__light:27 the__like:21 the__not:15
the__of:-24 the__thing:-14 the__up:17 the__were:18 the__you:74 the_best:-43 the_bill:32 the_car:-50 the_day:-15
the_dealer:-21 the_front:-14 the_guy:26 the_hood:18 the_keys:28 the_last:39 the_light:-36 the_mall:-27 the_morning:86
the_noise:-25 the_oil:27 the_only:-15 the_other:-20 the_phone:26 the_price:56 the_quote:60 the_street:18
the_texts:-63 the_th:-44 the_tires:-17 the_work:56 them:-16 them_$:-16 then:-29 then_$:-26 there_$:23 there__a:38
there_a:-32 there_with:25 these:-15 thing:-25 thing_$:-19 thing_to:35 think:-26 think_you:-21 third:74 this:-18
this_$:17 this__me:-29 this__the:54 this_a:-44 this_is:159 this_morning:-14 this_number:-14 this_phone:-19 those:-30
thought:-15 three:53 through:68 through_$:-24 thurs:-18 thursday:-29 tight:-34 tight_$:-27 til:-29 till:-49
till_the:-20 time:92 time__week:-14 time__you:-28 time_do:-19 time_i:43 time_you:27 times:89 times_$:16 tire:-34
tire_$:-22 tires_$:-14 tmrw:-22 to:14 to_$:15 to__a:-18 to__for:24 to__me:50 to__my:46 to__shop:-23 to_come:24
to_me:14 to_my:15 to_pay:14 to_sell:48 to_take:14 to_text:-33 to_the:-22 to_wait:-15 to_work:-15 to_you:-29
to_your:-26 toda:19 todavia:30 todavia_no:-25 today:31 today_$:39 todo:-37 todo__con:-16 todo__dia:69 todo_bien:-43
todo_el:67 told:98 told_me:19 told_you:42 too:-68 too_$:-189 too__for:-32 too__texts:70 too_many:74 too_much:40
took:66 took__of:-16 took__to:-24 took_care:-16 took_it:-36 top:-14 total:-20 trabajo:36 trabajo_no:50 traffic:-25
traffic_is:-24 traigo:-21 trataron:31 tres:22 trust:136 try:-21 try_me:-16 tues:-14 turn:-18 turno:-14 tuve:63
tuve_que:63 twice:107 twice_$:37 two:43 ultima:27 ultima__me:29 ultima_vez:26 un:81 un__y:18 una:125 una__de:56
una__en:18 una__y:31 una_hora:23 under__hood:22 uno:52 unos:45 up_$:-25 up__the:17 up_for:-16 up_my:14 urge:-43
used_to:28 ustedes:85 ustedes_$:61 uy:31 vale:26 vale_$:44 van_a:-14 veces:129 vender:38 vendi:-16 venia:22 ver:54
verdad_$:19 vez:79 vez_$:-24 vez_me:41 vez_que:23 vibrates:-29 viejo:17 viernes:-26 visit:72 visit_$:28 voy:19
voy_a:-20 wait:-75 wait_$:-18 wait_for:-15 waited:42 waiting:27 waiting__the:17 waiting_room:16 want_a:15 want_my:25
want_to:-29 was:146 was__and:52 was__at:-14 was__last:-47 was__to:16 was_in:-19 wasnt:59 way:73 way_$:-33 way_too:107
we:-38 we__that:-14 wednesday:-14 week_$:-41 weeks:-24 well:-26 well_$:-25 were:26 what:23 what__do:-17
what__that:-15 what__the:-48 what__you:-53 what__your:-47 what_a:157 what_are:-22 what_do:-23 what_i:91 what_is:-84
what_time:-30 what_was:-33 wheel:-33 wheel_is:-24 when:-20 where__the:16 where_is:14 while:34 who:-31
who__texting:-16 who__this:-17 who_is:-37 whoever:26 why:72 why_$:-17 why__you:110 why_do:70 why_not:-37 will:-87
will__be:-21 with:66 with_$:27 with__i:47 with__keys:18 with__texts:-48 with_a:19 with_me:-14 with_someone:-24
with_the:39 wonderful:66 wont:-18 work:71 work_$:83 works:-23 worse:62 worst:61 worth:-39 would:-57 wouldnt:14 wow:82
wrong:45 wrong_$:20 wrong_guy:-36 wrong_person:-22 wrong_with:-18 wrote:41 y:173 y__la:21 y__lo:-27 y__me:74 y__no:17
y__se:24 y_ahi:-17 y_ahora:14 y_cuanto:-25 y_la:17 y_luego:19 y_me:35 y_nadie:44 y_ni:42 y_ya:14 ya:-41 ya__con:-15
ya__hicieron:-27 ya__la:15 ya__lo:-47 ya__me:-17 ya__quiero:18 ya__voy:16 ya_le:-40 ya_me:-62 yep:-39 yes:-111
yes_$:-29 yes__the:-24 yes_and:19 yes_but:-27 yesterday:36 yo__he:-16 yo_no:-23 you:225 you_$:-166 you__a:33
you__do:-16 you__for:-22 you__have:-30 you__i:-22 you__it:29 you__me:85 you__my:151 you__stop:-18 you__text:18
you__texting:70 you__that:19 you__the:-46 you__this:-18 you__to:63 you__today:-25 you__what:16 you_a:-16 you_are:-25
you_call:-16 you_can:-26 you_charge:-45 you_charged:29 you_close:-26 you_did:16 you_folks:-15 you_from:-15
you_got:-49 you_guys:-26 you_had:47 you_have:-69 you_keep:77 you_left:102 you_never:55 you_open:-30 you_people:62
you_put:43 you_said:82 you_send:-25 you_take:38 you_tell:-25 you_text:83 you_there:-20 your:84 your__desk:52
your__for:-24 your__have:46 your_customer:-15 your_front:52 your_hours:-21 your_list:-14 your_manager:15 your_shop:18
"""
