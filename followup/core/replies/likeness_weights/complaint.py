"""What speaks for and against `complaint`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "complaint"
BIAS = -174
WEIGHTS = """\
#aban:84 #abia:134 #able:58 #ablo:59 #abra:70 #abus:361 #acan:59 #acar:53 #acce:125 #acco:-60 #acen:46 #acha:48
#achi:59 #acia:-59 #ader:51 #ades:117 #adie:249 #adio:81 #ador:90 #ados:120 #agan:74 #agar:-47 #agua:-74 #ague:67
#aigo:-60 #aile:-67 #aint:-197 #aite:116 #ajer:55 #aken:-82 #alab:74 #aler:-56 #ales:52 #alga:-49 #algu:-52 #alid:48
#alio:61 #alir:-61 #alis:66 #alke:51 #alla:-59 #alli:51 #ally:64 #alre:46 #amal:-60 #amar:48 #amba:88 #amor:-50
#ampe:-50 #anag:49 #anda:-55 #andi:53 #anej:-63 #aner:61 #angi:112 #anne:157 #anno:162 #ansa:131 #answ:96 #anta:102
#anym:-62 #anza:57 #apet:86 #apol:73 #apon:58 #appi:-74 #appo:46 #appy:109 #aqui:-79 #arad:68 #arag:-47 #aran:80
#arar:-134 #arca:-71 #arda:48 #arec:110 #arej:-101 #aren:57 #arer:100 #aret:73 #arga:-56 #arge:56 #argo:92 #aria:-64
#ario:-66 #arke:55 #arli:-50 #arlo:-49 #arly:100 #arme:169 #aron:420 #arqu:53 #arri:-75 #arro:126 #ashe:-47 #ashi:85
#asia:103 #aske:54 #asse:-69 #assi:-66 #asti:166 #asto:139 #atal:144 #atan:48 #ated:65 #aten:120 #ates:-128 #athe:-57
#atin:109 #attl:-60 #auto:-73 #avan:85 #avar:-49 #aved:-74 #avin:55 #ayin:-96 #baby:47 #back:125 #bala:-53 #bang:52
#bank:-106 #baro:-81 #bast:115 #bate:-69 #bber:49 #bcap:84 #beat:-61 #bein:105 #bell:-61 #belo:-58 #bend:-71 #bers:58
#bian:71 #bici:-55 #bien:82 #bill:302 #bing:-77 #bios:49 #blad:90 #blem:-56 #bloc:-86 #body:182 #bols:77 #bomb:-48
#bone:64 #boni:115 #bott:-53 #boug:-51 #brab:-60 #brak:-104 #brar:189 #bras:82 #brat:-62 #brid:-61 #brok:-125
#brua:48 #buen:-46 #buji:133 #bump:89 #burn:84 #busc:-50 #busi:320 #cada:159 #camp:-57 #cans:149 #cant:-137 #cara:74
#card:82 #care:114 #carg:63 #caro:-57 #carp:55 #caus:79 #ccep:85 #ccou:-60 #cepc:124 #cero:-48 #cesi:-87 #chan:70
#char:56 #chec:-95 #chip:71 #chis:48 #choo:-89 #chos:80 #cian:52 #cida:72 #cien:-53 #ciga:90 #cion:101 #cios:145
#cked:82 #clam:-48 #clar:-49 #clas:121 #clav:53 #clie:68 #clun:69 #coas:-53 #cobr:164 #code:-64 #coin:50 #colg:93
#come:46 #comi:-57 #comp:-139 #conf:163 #cons:102 #cora:71 #cord:64 #cort:-88 #cosa:49 #cost:-68 #crac:71 #crea:60
#cred:64 #croo:65 #ctic:64 #ctio:108 #cual:-70 #cuan:-147 #cuen:93 #culo:46 #culp:122 #cupa:101 #cupe:-60 #cupo:-69
#curi:-99 #curr:-54 #daba:102 #dade:50 #darm:-102 #daro:133 #dawn:90 #dder:-57 #debo:-60 #dejo:56 #dela:-46 #dema:74
#denm:89 #dent:-67 #derf:101 #desa:56 #desd:116 #desi:-53 #desk:67 #deso:238 #devo:65 #devu:69 #dial:58 #dias:115
#dich:106 #dici:-76 #dicu:46 #didn:94 #diga:-96 #dije:238 #ding:98 #dios:-60 #dirt:82 #disa:125 #dito:-50 #dobl:75
#domi:61 #dona:47 #door:73 #doub:53 #down:134 #driv:-87 #drov:87 #dura:-63 #duri:102 #duro:112 #eall:99 #eant:-79
#eare:63 #earr:-53 #ease:131 #eate:74 #eati:85 #eats:94 #eavi:66 #ebru:48 #ecci:-48 #ecen:95 #ecep:57 #eces:47
#echa:-71 #ecid:-48 #edal:-55 #edas:102 #eded:72 #edes:82 #eede:72 #eeds:67 #eemb:66 #eepi:-68 #eeps:-63 #efac:53
#egad:94 #egan:82 #egle:91 #egre:64 #egui:74 #eing:120 #eith:87 #ejam:-46 #ejar:81 #ejas:-113 #ejor:-86 #eken:-47
#elad:51 #elel:-46 #elen:120 #ello:-91 #elon:-66 #elta:65 #elvo:47 #emas:143 #embo:66 #empr:54 #enca:-61 #enco:-68
#encu:-46 #enda:60 #ende:86 #enen:52 #enes:-72 #enia:81 #enis:-49 #enla:125 #enme:108 #enos:150 #ensa:152 #ense:-68
#enta:-49 #enti:74 #ents:-99 #enty:103 #eopl:66 #epai:71 #epci:124 #epin:-68 #epor:81 #epta:101 #epti:-77 #erca:74
#erch:47 #erda:80 #erde:47 #erdi:96 #ered:137 #eren:94 #eres:-57 #erfu:101 #eria:69 #erie:138 #erio:111 #erma:-58
#erne:-58 #eron:272 #eros:197 #erta:49 #erti:70 #eryt:-67 #esar:124 #esco:54 #esde:116 #eset:66 #esim:82 #esit:-71
#esor:222 #esos:48 #espe:178 #espi:52 #essa:85 #esse:172 #essi:59 #este:58 #estu:68 #eten:55 #etes:77 #etic:62
#etie:77 #etim:-65 #ette:91 #even:59 #ever:104 #evie:64 #evis:-61 #evol:65 #evue:69 #ewhe:103 #exce:-52 #exis:71
#expe:67 #expl:117 #exti:-51 #extr:60 #exts:113 #ezco:67 #facc:53 #falt:158 #fast:53 #febr:52 #feel:108 #fell:-75
#fend:109 #fess:74 #fier:-67 #file:69 #filt:49 #fina:-56 #fini:-67 #floj:124 #floo:89 #foco:82 #folk:-47 #foll:-52
#fore:52 #form:90 #four:132 #free:83 #freg:117 #fren:-52 #from:-77 #ften:69 #fuga:-59 #fund:-58 #funn:55 #furi:185
#fuse:46 #game:-54 #gand:-59 #gara:-48 #gave:64 #gend:53 #gett:47 #ggin:-50 #ghed:74 #ghwa:53 #ging:81 #give:-65
#glar:-49 #glov:82 #golp:101 #gone:63 #gran:-54 #grat:-66 #grav:-90 #grea:90 #gres:64 #gros:155 #guan:91 #guen:-63
#gues:-61 #guid:103 #guna:-58 #guno:59 #gunt:50 #gust:71 #habi:134 #hace:-72 #hake:-59 #hame:62 #hang:61 #hank:-65
#harg:90 #hast:-48 #hats:-56 #head:-75 #hear:-55 #heat:-51 #heck:-79 #hell:-88 #here:55 #high:101 #hird:131 #hock:56
#hoev:117 #hone:62 #hool:-85 #hope:84 #hops:-73 #hora:126 #hors:49 #hoto:55 #hour:56 #howe:-50 #howl:66 #hree:130
#hrou:100 #hubc:84 #hudd:-57 #huma:-56 #hung:120 #hurs:-59 #hway:53 #iado:62 #iben:106 #ibir:-66 #icad:64 #icen:54
#icho:94 #icia:70 #icio:-88 #icul:46 #idad:79 #ider:52 #idge:-61 #idic:46 #idnt:94 #ieja:52 #iemb:-51 #iemp:61
#iere:132 #iero:160 #ieve:-75 #igar:90 #ight:64 #ighw:53 #igue:73 #iled:-67 #illa:-48 #ills:55 #imes:162 #inal:-47
#inci:61 #inco:108 #indo:68 #ined:88 #inis:-67 #inki:-49 #insi:-51 #inst:-50 #ints:-51 #inut:63 #invo:78 #ione:-94
#iosi:-48 #ious:153 #ippe:150 #irmo:-64 #irri:53 #irve:-60 #isan:189 #isap:125 #ised:92 #ises:79 #isit:149 #isma:-56
#ismo:84 #iste:81 #isti:-52 #isto:-94 #itat:48 #ited:67 #iten:69 #ithe:78 #iven:-48 #ives:-76 #izad:46 #jaja:-104
#jame:-46 #jaro:50 #jeje:-61 #jenl:69 #jera:61 #jito:-50 #jump:-87 #junt:-56 #keep:-66 #kend:-47 #kept:154 #keys:65
#kill:-96 #kind:-81 #labr:74 #lade:67 #lado:107 #lanc:-57 #laro:91 #lase:119 #last:114 #lava:-70 #lcom:70 #lear:65
#left:133 #lega:57 #lego:-54 #lela:-46 #lema:59 #leme:-53 #leto:49 #lgun:-47 #lied:99 #lien:60 #ligh:-54 #lina:48
#lind:89 #lisi:66 #list:-53 #live:-55 #lked:51 #llan:-65 #llas:-105 #lled:141 #llin:89 #llow:-94 #loor:89 #loos:98
#lopp:75 #lora:50 #lous:46 #love:48 #lrea:46 #ltas:63 #lunk:69 #lver:80 #lvie:69 #lyin:-87 #maam:-58 #make:109
#male:-60 #malo:-85 #mana:49 #mani:90 #mann:161 #mano:85 #many:82 #marq:53 #masi:103 #mati:-48 #mats:50 #mbar:-51
#mbol:66 #mean:-56 #mejo:-86 #meno:59 #mens:73 #ment:-99 #meri:49 #mero:-103 #mess:66 #meti:53 #mewh:82 #mien:-67
#mine:-85 #ming:61 #mire:57 #mise:81 #mist:-52 #mome:-46 #mone:127 #more:50 #most:51 #moto:-46 #mous:52 #mper:52
#mpla:-67 #mple:105 #mpli:-68 #mpor:-47 #mpra:74 #mpre:135 #much:119 #nada:115 #nadi:208 #nado:-52 #nail:-101
#name:-67 #naro:188 #ncan:-81 #ncia:-52 #ncon:91 #ncue:-46 #ndab:102 #ndan:72 #nder:143 #ndic:-66 #ndin:72 #nece:-75
#neci:86 #need:-95 #nera:50 #nero:58 #ners:121 #nest:94 #neve:46 #next:-89 #nfun:-77 #ngan:63 #nger:62 #ngin:154
#nici:97 #nigh:127 #nine:79 #nish:-67 #nito:57 #nlos:-54 #nner:170 #nnoy:162 #nobo:175 #noch:57 #none:79 #noth:111
#noyi:92 #nsaj:73 #nsan:141 #nsar:-55 #nswe:96 #ntac:-59 #ntan:89 #ntar:52 #ntas:57 #nted:94 #nten:-90 #nter:98
#ntes:149 #ntis:-89 #ntos:62 #ntra:-98 #numb:-47 #nume:-60 #nunc:95 #nvoi:78 #nymo:-62 #oast:-53 #oble:50 #obod:175
#obot:-57 #obre:50 #obro:78 #oche:53 #ocke:95 #ocks:-62 #oeve:61 #ofes:74 #offe:55 #ofte:69 #oice:74 #oint:59
#ojal:94 #olks:-47 #olle:-69 #olog:73 #olpe:101 #olso:66 #olve:96 #olvi:77 #omat:-59 #omer:-50 #omes:-64 #omew:75
#omis:90 #ompr:-72 #onal:67 #once:48 #oned:121 #oner:160 #onfi:188 #onfo:52 #onfu:-78 #onga:92 #onit:92 #only:-56
#onse:-58 #onta:-73 #onte:182 #ontr:-79 #ooks:63 #oose:94 #open:-76 #ople:66 #oppy:75 #oque:-49 #oran:51 #oras:105
#orde:156 #orev:86 #orgo:56 #orit:-53 #oriz:-71 #orme:92 #orra:-144 #orry:-52 #orse:155 #orst:65 #orta:-74 #orth:-49
#orti:84 #osas:64 #oser:52 #osto:-55 #ostr:89 #otch:106 #othe:49 #othi:78 #otto:-53 #ouch:-50 #ourt:64 #ousl:90
#ouve:86 #oven:-66 #over:72 #owed:-54 #owns:169 #oyed:54 #oyin:92 #paci:-63 #pada:53 #paga:55 #pagu:77 #pain:-54
#pair:87 #pala:74 #pare:56 #pasa:-50 #pass:-120 #payi:-96 #pcio:119 #peda:-55 #pedi:79 #pens:-148 #peop:66 #peor:210
#perd:160 #perm:-47 #pers:-71 #pesi:82 #pest:51 #pete:117 #peto:96 #phol:62 #phot:55 #pien:-55 #pier:52 #pila:-48
#ping:-104 #pint:55 #piso:65 #plen:144 #plie:50 #plug:73 #poca:170 #poke:83 #polo:73 #pone:182 #pong:73 #porq:96
#pped:101 #ppie:-74 #ppoi:46 #pran:74 #prec:-54 #preg:50 #pren:-80 #pres:141 #pret:56 #pric:-78 #prin:79 #pris:49
#prof:74 #prom:85 #pued:-155 #pues:97 #punt:72 #puro:105 #push:178 #quea:-63 #qued:88 #quej:-160 #quer:74 #quic:-58
#quin:-72 #rack:49 #rada:79 #radi:50 #rado:137 #rain:55 #raje:71 #rake:-104 #rand:102 #rang:-68 #raro:116 #rata:139
#rato:91 #ratt:-60 #raya:60 #rcar:-51 #rdan:-57 #rdar:101 #rdat:46 #rden:129 #rder:104 #rdie:123 #real:176 #reas:124
#reat:160 #recc:-48 #rece:66 #rect:62 #recu:-55 #redo:50 #reek:80 #reem:66 #refa:53 #refu:66 #rega:122 #regl:69
#regr:64 #regu:58 #rela:47 #renc:-48 #rend:-80 #repo:56 #rero:114 #resh:46 #resp:105 #ress:165 #rest:-83 #rett:80
#reve:76 #rezc:77 #rful:101 #rgan:57 #rged:121 #rgot:56 #rian:75 #ribe:102 #ribo:-52 #ride:-54 #ridg:-61 #ridi:46
#ried:51 #rifa:-69 #rime:46 #ring:56 #rint:86 #rios:151 #riou:48 #ripp:145 #rite:122 #rito:97 #rive:-93 #rlie:-50
#rman:-58 #rmis:-74 #rned:60 #road:-49 #rock:-65 #rofe:74 #rojo:-65 #roke:-125 #romi:90 #rona:-50 #rong:59 #rook:65
#ropp:68 #rose:64 #roso:91 #rote:82 #roto:68 #roug:107 #roun:-59 #rove:80 #rpri:80 #rque:70 #rrad:48 #rreg:76
#rrie:-81 #rrin:-108 #rrit:81 #rror:84 #rsel:49 #rted:-69 #rtie:83 #rtin:70 #ruar:48 #rude:70 #ruid:-71 #ruin:121
#rumb:-86 #rust:182 #ryer:54 #ryin:152 #ryth:-67 #saca:185 #sage:53 #said:69 #saje:100 #salg:-76 #sali:54 #same:55
#sapp:125 #sati:-46 #save:-88 #scar:72 #scho:-85 #scon:66 #scue:-54 #sday:-50 #seat:132 #sell:71 #send:-53 #seni:90
#senm:-47 #sent:122 #seri:159 #shak:-59 #shie:89 #shoc:56 #shud:-57 #siad:103 #sick:169 #sida:-48 #siem:51 #sien:74
#sign:-58 #sigo:54 #sigu:72 #sill:117 #simo:53 #sing:81 #sion:-48 #sirv:-60 #sita:-68 #site:-59 #sito:-59 #sits:123
#sked:54 #slop:75 #slow:82 #sold:64 #solo:-47 #some:92 #sper:75 #spet:93 #spok:83 #sque:-72 #ssag:52 #ssed:123
#stab:53 #staf:-51 #stay:-74 #sted:81 #ster:86 #stic:91 #stid:58 #stil:80 #stir:-52 #stol:-73 #stop:-150 #stos:-84
#stuf:83 #stuv:68 #such:68 #suen:-75 #sues:-64 #sume:95 #sure:-51 #swee:-50 #swer:96 #taba:96 #tain:48 #take:-69
#tama:-60 #tame:-68 #tant:108 #tape:88 #tapo:53 #tari:-50 #tars:-82 #tart:-98 #tati:73 #tche:92 #tede:82 #teme:-90
#tenc:88 #tenm:47 #tere:-55 #tero:98 #ters:-47 #test:158 #teve:-80 #text:185 #then:-53 #they:98 #thir:130 #thre:85
#thro:86 #thur:-59 #tick:-78 #tico:71 #tidi:58 #tien:59 #tier:172 #till:82 #time:193 #tina:-51 #ting:144 #tion:60
#tita:72 #tito:-58 #titu:107 #toda:87 #told:147 #toma:-49 #tome:-51 #took:136 #topp:-52 #tore:-63 #tori:62 #touc:-50
#trad:54 #trai:-66 #trar:-74 #trat:185 #trea:158 #tres:77 #trie:-48 #trus:197 #ttom:-53 #tude:111 #tuff:83 #twic:173
#uant:-61 #uary:58 #ubca:84 #ucho:153 #udde:-57 #ueak:-49 #ueda:-50 #ueja:-141 #uena:-89 #ueno:52 #uent:74 #uerc:72
#ueri:77 #uest:-61 #ueva:-57 #ueve:-46 #uick:-58 #uine:51 #ujia:133 #ulou:46 #ulpa:155 #uman:-56 #umbe:-63 #umbs:-97
#umpe:102 #unca:58 #unch:85 #unny:55 #unta:88 #unte:51 #upho:62 #upse:74 #urin:106 #urio:76 #urne:88 #usca:-50
#ushe:47 #ushi:48 #ushy:183 #usin:-49 #usly:90 #uste:72 #usto:122 #utes:68 #utom:-49 #vaci:48 #vacu:-79 #vale:49
#varo:-49 #vece:142 #veci:-56 #vend:92 #veni:103 #vent:-66 #verc:47 #vere:-51 #veri:58 #verl:-46 #vida:-55 #viej:95
#vier:66 #view:64 #visa:53 #visi:127 #viso:-46 #voic:74 #volv:151 #wait:63 #walk:83 #want:-61 #ward:52 #wasn:49
#week:59 #weet:-50 #were:63 #what:-56 #when:-54 #wher:48 #whoe:117 #wice:173 #will:-77 #wipe:70 #woke:70 #wond:61
#wors:171 #wort:-49 #writ:58 #wron:59 #wrot:74 #xcel:-52 #xist:71 #xpla:62 #xpli:55 #xted:96 #xtin:-51 #xtra:60
#ying:61 #ymor:-62 #your:156 #youv:86 #ythi:-83 %again_later%agree:114 %again_later%away:-170 %again_later%bad:113
%again_later%bring:66 %again_later%busy:-120 %again_later%car_part:173 %again_later%family:-70
%again_later%gone_car:71 %again_later%leak:46 %again_later%leave_me:-83 %again_later%money:47
%again_later%pay_day:-58 %again_later%phone:88 %again_later%place:-48 %again_later%refuse:94 %again_later%season:-48
%again_later%staff:104 %again_later%thanks:86 %again_later%wrong_one:106 %agree:-125 %agree%away:118 %agree%bad:154
%agree%bring:125 %agree%busy:-98 %agree%call_off:-68 %agree%car_part:-69 %agree%do_it:-54 %agree%doubt:-87
%agree%leave_me:128 %agree%message:110 %agree%money:84 %agree%on_way:74 %agree%opening:62 %agree%pay_day:95
%agree%refuse:162 %agree%shake:-53 %agree%start_again:-118 %agree%thanks:-56 %away:63 %away%call_off:-87
%away%car:-64 %away%car_part:-72 %away%do_it:55 %away%elsewhere:-49 %away%family:-66 %away%gone_car:58
%away%how_long:49 %away%lift:-82 %away%pay_day:-49 %away%question:-112 %away%refuse:-71 %away%staff:52
%away%thanks:47 %bad:526 %bad%bring:-51 %bad%busy:55 %bad%car_part:122 %bad%do_it:74 %bad%elsewhere:137
%bad%how_long:125 %bad%leave_me:99 %bad%lift:51 %bad%meaning:-188 %bad%message:122 %bad%money:61 %bad%noise:-70
%bad%on_way:46 %bad%phone:93 %bad%place:-102 %bad%question:110 %bad%refuse:-49 %bad%season:115 %bad%shift_it:51
%bad%staff:200 %bad%start_again:189 %bring%busy:-115 %bring%doubt:68 %bring%gone_car:-82 %bring%machine:-77
%bring%on_way:128 %bring%opening:76 %bring%refuse:-61 %bring%staff:-97 %bring%wrong_one:100 %busy:86 %busy%do_it:47
%busy%fails:112 %busy%leak:46 %busy%leave_me:-54 %busy%message:71 %busy%on_way:120 %busy%phone:-66 %busy%question:-46
%busy%refuse:50 %busy%shift_it:-63 %busy%staff:-76 %call_off%do_it:-118 %call_off%elsewhere:85 %call_off%fails:124
%call_off%family:95 %call_off%gone_car:53 %call_off%leave_me:-46 %call_off%message:-102 %call_off%noise:57
%call_off%odometer:62 %call_off%on_way:66 %call_off%phone:93 %call_off%question:160 %call_off%refuse:97
%call_off%shift_it:65 %call_off%staff:50 %car%car_part:52 %car%doubt:130 %car%elsewhere:61 %car%fails:-75
%car%gone_car:-201 %car%leave_me:106 %car%lift:-97 %car%message:106 %car%odometer:76 %car%on_way:56 %car%pay_day:-82
%car%phone:60 %car%place:81 %car%refuse:-98 %car%shift_it:57 %car%start_again:109 %car_part%elsewhere:-70
%car_part%fails:-80 %car_part%lift:56 %car_part%meaning:56 %car_part%phone:49 %car_part%place:-70
%car_part%refuse:124 %car_part%smoke_smell:-65 %car_part%staff:87 %car_part%start_again:-52 %car_part%thanks:146
%car_part%who:195 %do_it:-56 %do_it%elsewhere:-57 %do_it%family:-77 %do_it%how_long:133 %do_it%leak:-48
%do_it%leave_me:49 %do_it%meaning:98 %do_it%message:-90 %do_it%noise:89 %do_it%on_way:59 %do_it%phone:72
%do_it%place:143 %do_it%refuse:186 %do_it%season:-60 %do_it%shake:88 %do_it%who:166 %doubt%fails:61 %doubt%family:-52
%doubt%gone_car:112 %doubt%how_long:112 %doubt%leave_me:-51 %doubt%message:-187 %doubt%phone:-68 %doubt%shift_it:108
%doubt%start_again:-59 %doubt%wrong_one:61 %elsewhere%machine:74 %elsewhere%money:132 %elsewhere%phone:88
%elsewhere%refuse:-148 %elsewhere%shift_it:74 %elsewhere%start_again:-79 %elsewhere%thanks:-66
%elsewhere%wrong_one:-85 %fails:-157 %fails%how_long:-69 %fails%leak:46 %fails%leave_me:70 %fails%message:-104
%fails%money:96 %fails%on_way:-52 %fails%phone:95 %fails%refuse:158 %fails%staff:56 %fails%thanks:-57
%fails%wrong_one:-100 %family:-47 %family%leave_me:73 %family%message:56 %family%refuse:-60 %family%shift_it:-99
%family%thanks:-74 %gone_car:-53 %gone_car%machine:84 %gone_car%meaning:-48 %gone_car%money:58 %gone_car%on_way:62
%gone_car%phone:82 %gone_car%smoke_smell:61 %gone_car%start_again:55 %gone_car%thanks:101 %gone_car%wrong_one:53
%how_long%machine:47 %how_long%message:134 %how_long%money:-60 %how_long%phone:104 %how_long%place:-49
%how_long%question:-49 %how_long%refuse:72 %how_long%staff:88 %leak%money:-51 %leak%refuse:113 %leak%shift_it:66
%leave_me%lift:46 %leave_me%message:-114 %leave_me%odometer:-73 %leave_me%on_way:107 %leave_me%pay_day:103
%leave_me%question:123 %leave_me%season:76 %leave_me%staff:91 %leave_me%start_again:-79 %lift:57 %lift%message:46
%lift%on_way:-60 %lift%opening:116 %lift%phone:120 %lift%question:-69 %lift%refuse:69 %lift%shift_it:-59
%lift%thanks:57 %machine:-53 %machine%message:70 %machine%noise:65 %machine%start_again:-53 %machine%wrong_one:47
%meaning:-104 %meaning%message:-108 %meaning%on_way:115 %meaning%phone:-119 %meaning%question:-69 %meaning%refuse:-73
%meaning%staff:52 %message:140 %message%money:-58 %message%odometer:-61 %message%on_way:245 %message%pay_day:79
%message%phone:-102 %message%place:-56 %message%refuse:-90 %message%season:194 %message%shift_it:187
%message%start_again:-253 %message%thanks:-64 %message%who:-50 %money:164 %money%noise:47 %money%odometer:277
%money%pay_day:124 %money%phone:48 %money%shift_it:91 %money%start_again:142 %money%thanks:207 %noise:-93
%noise%place:48 %noise%question:-46 %noise%refuse:112 %odometer:49 %odometer%on_way:-62 %odometer%pay_day:63
%odometer%phone:-69 %odometer%question:-47 %odometer%start_again:68 %on_way%opening:109 %on_way%phone:102
%on_way%place:-68 %on_way%shake:-55 %on_way%shift_it:-59 %on_way%smoke_smell:-70 %on_way%wrong_one:-68
%pay_day%phone:60 %pay_day%season:90 %phone:-70 %phone%place:60 %phone%question:-122 %phone%refuse:68
%phone%shift_it:-130 %phone%staff:64 %phone%who:130 %phone%wrong_one:-48 %place:-61 %place%question:-53
%place%wrong_one:164 %question%staff:57 %question%start_again:-142 %question%wrong_one:53 %refuse%season:56
%refuse%staff:97 %refuse%start_again:126 %refuse%thanks:99 %refuse%who:-53 %season%shift_it:-79 %season%thanks:94
%season%who:106 %shake:-179 %shift_it%start_again:-80 %shift_it%thanks:86 %smoke_smell:-76 %staff:57
%staff%start_again:-79 %staff%thanks:-136 %staff%who:-54 %start_again%who:69 %start_again%wrong_one:88 %thanks:-73
%who:-86 %who%wrong_one:63 @?:-188 @after_visit:224 @car:-84 @confirm:-54 @day:-89 @offers:-176 @time:-86
@walk_in:-53 ^_$:-133 ^_a:-150 ^_ahora:-57 ^_al:-163 ^_another:125 ^_as:-51 ^_bank:-48 ^_be:-53 ^_been:87
^_better:-77 ^_bien:-55 ^_brakes:-95 ^_broke:-49 ^_can:-104 ^_cancel:47 ^_cancelen:57 ^_como:-63 ^_con:-83
^_couldnt:-95 ^_cuando:-95 ^_cuanto:-145 ^_de:-158 ^_dejame:-46 ^_did:-102 ^_do:-88 ^_does:-59 ^_drop:59 ^_ese:-53
^_esta:-66 ^_everything:-52 ^_excelente:-72 ^_fui:58 ^_going:-63 ^_great:179 ^_hableme:-72 ^_hace:-62 ^_had:-52
^_hasta:-64 ^_have:-64 ^_hey:-73 ^_hm:-71 ^_how:-120 ^_im:-105 ^_in:-47 ^_is:-146 ^_it:-121 ^_la:64 ^_last:83 ^_le:64
^_llamenme:-112 ^_llevo:93 ^_lol:73 ^_los:-94 ^_mal:103 ^_maybe:66 ^_meh:113 ^_mi:-96 ^_mil:109 ^_muy:-75 ^_my:-87
^_nadie:111 ^_nel:74 ^_ni:-109 ^_nice:62 ^_ninguno:81 ^_no:89 ^_nop:57 ^_not:-54 ^_nothing:-58 ^_nunca:105 ^_oh:197
^_one:166 ^_otra:74 ^_otro:183 ^_phone:-69 ^_please:-47 ^_por:56 ^_price:-66 ^_pues:95 ^_puro:151 ^_quede:101
^_quedo:-61 ^_quote:-48 ^_runs:-67 ^_salio:108 ^_same:115 ^_scratch:-82 ^_siempre:113 ^_sigue:-77 ^_sin:-170 ^_so:131
^_someone:63 ^_son:150 ^_soy:-85 ^_still:119 ^_stop:96 ^_thanks:82 ^_the:142 ^_this:82 ^_thurs:-50 ^_thursday:50
^_tienen:-60 ^_todo:-50 ^_uno:105 ^_uy:71 ^_waiting:-83 ^_were:-54 ^_when:-56 ^_who:48 ^_why:92 ^_wont:62 ^_worst:73
^_would:-69 ^_wow:161 ^_wrong:68 ^_y:-78 ^_ya:-70 ^_you:155 ^_your:145 a:90 a_$:-106 a__a:-59 a__day:76 a__de:46
a__en:-93 a__gente:91 a__in:84 a__is:226 a__la:-65 a__lol:-67 a__misma:-56 a__no:-96 a__of:-59 a__off:97 a__on:-49
a__person:50 a__shop:70 a__that:-62 a__thing:53 a__una:78 a_baby:-61 a_blessed:-51 a_como:-49 a_day:96 a_esperar:-46
a_good:-82 a_guy:-78 a_jump:-51 a_la:-51 a_lot:126 a_mi:46 a_minute:-46 a_mis:77 a_month:58 a_mouse:66 a_new:-48
a_phone:102 a_place:-73 a_price:-49 a_que:-54 a_rip:138 a_saturday:57 a_two:89 a_ustedes:-60 a_week:174 a_word:47
about_how:47 about_it:78 about_my:-95 about_the:46 about_this:-50 add:-47 after:69 after_$:-64 after__you:62
after_the:51 after_you:125 agarro:54 agua:-55 ahi_en:54 ahi_mismo:58 ahi_voy:51 ahora:47 ahora__me:56 ahora_cuanto:47
ahora_no:-46 ahora_si:74 aint:-59 al_frenar:47 al_mes:101 al_nino:57 al_salir:47 algo:73 alguien_que:85 all:59
all_$:-115 all__my:56 all__what:-51 all_day:149 all_i:61 all_over:72 all_that:-49 already:46 already__me:-102
already_and:119 alright_$:-63 am:48 am_is:49 an:58 an_hour:70 and:195 and__and:-60 and__car:-104 and__do:55
and__dont:-133 and__have:47 and__i:55 and__is:-48 and__it:-86 and__like:81 and__me:-75 and__never:-59 and__no:51
and__one:87 and_back:-65 and_dont:-79 and_he:-51 and_i:58 and_ill:-52 and_it:85 and_my:56 and_nobody:59 and_now:90
and_out:-49 and_please:96 and_stop:62 and_that:-49 and_what:-48 and_you:138 and_your:59 anda:-76 ando:-62 annoying:92
annoying_$:100 antes:-72 antes_$:90 any:-128 anymore:-62 appreciate_it:54 aqui:-46 are_$:-82 around:-98 around_$:-54
as:-125 as_well:-56 asi:59 asi_no:66 asi_que:-92 ask:70 ask_$:53 ask__in:46 ask_me:-72 asked:54 at:66 at_$:-84
at__counter:104 at__the:138 at_all:-96 at_am:65 at_and:-61 at_in:150 at_me:59 at_my:91 at_noon:-62 at_the:-93
at_your:97 ate:48 ate_my:68 atencion:78 aviso_$:-59 b:52 baby:56 baby_$:104 back:47 back_$:139 back__it:61
back__my:-51 back__the:-67 back_in:-73 bad:-180 bad_$:-167 bajenle:69 bang:54 bank:-106 basta:63 basta_$:60
basta_con:-132 bateria:-69 be__that:-88 be__the:63 be_back:60 be_better:-99 been__a:66 been__for:-58 been__since:-57
been__to:-57 before__i:47 before_noon:51 before_you:-64 being:105 believe:-56 bendiciones:-66 bendiciones_$:-57
bet:-53 better_$:-99 better_than:-77 bici:-55 bien__el:-79 bien_el:76 bien_feo:70 bien_las:56 bien_no:46
bien_todo:-92 bill:167 bit:79 bit_much:141 blessed:-51 blocked:-67 bone:64 bonito:83 book:-85 booking:54
borrenme_$:49 both:-46 bother:-57 bottom:-53 bought:-51 brakes:-79 brakes_feel:-95 bridge:-61 broke:-80
broke_down:-52 bucks_and:57 bumper:115 burned:54 but:-106 but_i:-46 but_not:56 but_the:-61 but_what:-47 by__name:-46
by_for:63 by_that:-46 by_you:60 cada:110 cada_semana:50 call:-91 call__about:-51 call__please:53 call_back:-62
called:86 cambio:-49 cambios:49 came_back:-232 can:-168 can__call:-48 can_the:-49 cancel_it:88 cancelar:-48
cancelela:-46 cancelen:111 cant:-115 cap:101 car:60 cara:68 card:102 care_of:-65 carga:-48 cargo:106 carro__los:64
carro__para:77 carro__ustedes:-70 carro_a:50 carro_no:-50 cash:-48 cat:-50 cause:58 cel:-63 cerrado:61 chamba_$:50
changed__oil:79 changed_my:85 changing:109 charge_for:-58 charged:74 check:-77 chiste:74 chocaron:-57 chocaron_y:-54
church_$:57 clase:119 clase_de:119 clientes:95 cobran:-49 cobran_$:56 cobraron:97 cobro:78 code:-64 come:60
come__it:114 come_in:77 comes:-64 como:47 como_$:-48 como__mi:-46 como__otra:64 como_la:74 como_me:114 como_nuevo:-46
complaints:-90 compre:-48 con:144 con__de:-83 con__frenos:85 con__que:117 con_el:111 con_ese:76 con_la:149 con_lo:86
con_que:-69 confirmo:-64 corriente:-48 cosas:64 cost_$:53 costo:-55 could_you:-67 couldnt_be:69 counter:112 cuadra:50
cual:-49 cuando__lo:52 cuanto:-187 cuanto__el:-64 cuanto__la:-54 cuanto__lo:57 cuanto_era:64 cuenta:123 cuenta_$:65
curious:-52 customer:-47 da:-87 dad:-53 darme:-52 dawn:90 day_$:-104 day_job:76 days:79 de_$:-63 de__a:108
de__cita:50 de__como:58 de__es:86 de__llanta:69 de__llantas:-55 de__no:-67 de__otra:-97 de__si:56 de__y:98
de_aceite:79 de_donde:-50 de_eso:-124 de_las:-100 de_lo:-53 de_los:-88 de_mas:68 de_noche:-60 de_que:-90
de_trabajo:70 debo:-60 dejame:-46 dejaron:50 dejo_el:48 del__me:107 del__y:-58 delete__number:49 demasiados:73
desde:116 desde_que:62 desk:67 despues__la:-53 despues_de:80 devolvieron:69 dia:49 dia__la:94 dia_de:74 dial:69
dias:121 dias_$:-53 dicen:53 dicho:106 did:-71 did_it:-74 did_my:152 did_you:-124 didnt:94 digo_$:-46 dije:198
dios:-60 directions:50 do:-146 do_$:46 do__and:-47 do__keep:80 do__own:-54 do__shut:-62 do_not:-69 doble:56
does__write:64 does_all:-50 does_nobody:93 does_that:-47 doing_the:148 domingo:61 domingo_es:59 don:-88 done_$:-49
dont__to:-92 dont__you:129 dont__your:-96 dont_have:-92 dont_you:82 door:66 dos:135 dos_$:88 dos__que:-68 dos_dias:99
dos_veces:91 double:61 down:50 down_on:-108 down_the:112 doy:-46 drive:-97 driveway_$:48 drop_the:46 dropped:68
drove:87 during:106 duro:112 early:100 early_$:175 eating:68 eh:90 eh_$:52 el:59 el__a:-50 el__bien:55 el__con:60
el__de:64 el__el:-59 el__fue:77 el__hay:52 el__hoy:72 el__lleno:73 el__todo:117 el__y:53 el_carro:72 el_de:-80
el_domingo:-64 el_fin:50 el_gerente:56 el_mismo:78 el_muchacho:50 el_numero:-56 el_piso:65 el_tapon:57 el_telefono:69
el_trabajo:84 el_trato:52 elm:-49 else:-96 email:-72 en__dias:68 en__noche:91 en__puerta:69 en__taller:-117
en__trabajo:-46 en_el:-67 en_enero:-57 en_otro:-102 encargado_$:-51 encontraron:-68 encontraron_$:-64 end:-54
enero_$:-75 entregaron:60 entro_$:60 era:84 era_el:83 es_$:-141 es__de:56 es__que:-52 es__y:-50 es_de:-52 es_por:-81
es_un:94 escriban:91 escriban_$:-80 escriban_mas:-87 escriban_tan:84 escriben:109 escriben_$:-72 escribo:-52 ese:-117
ese_dia:-50 eso:-92 eso__lo:48 eso__se:51 esperaba:54 esperando:63 esperar_$:-80 espere:83 esperen:-46 esta:-142
esta_$:-55 estas:57 esto_$:-46 estoy:46 estuvo:60 even__my:-78 ever_$:-74 every:117 every_other:83 everything:-67
everything_was:-46 ex:58 explain:59 explica:-69 falta_de:92 far:-67 february:48 fee:97 feel:112 feel_like:120
fender:48 feo:117 feo_$:62 few:-75 file:80 fine_$:-86 fix:47 fixed_it:48 floor:89 floor_mats:50 foco:82 folks:-47
follow:-52 for:77 for__i:90 for__it:-52 for__same:65 for__second:-52 for_me:-145 for_nothing:202 for_that:98
for_the:58 for_your:-53 forever:86 forever_$:104 forgot:56 forgot_to:75 found_a:86 four:64 free:85 free__my:-61
frena:-74 frenar:47 freno:-86 frenos:67 fresh:46 friday__the:53 friday_and:74 from:-77 from_the:61 from_you:-147
from_your:-58 fue__que:-74 fue_lo:-74 fuga:-59 fui:150 funny:55 garage:-47 gasolina:47 gasto:74 gave:64 gave_me:67
gente_$:-48 get__a:46 get__work:51 get_a:-71 get_it:85 get_your:51 getting:47 give_it:84 give_me:-49 go__the:-48
go__to:51 go_through:-62 going__take:50 going_to:-142 golpe:81 gone:63 good:-84 good__i:49 got_$:76 got__back:59
got__for:62 got__guy:-71 got_a:-124 got_home:55 got_it:112 got_my:80 got_the:-55 got_to:-80 gracias_$:-69
gracias__la:-63 gracias__nada:233 gracias__no:110 gracias_a:-64 gracias_por:88 grease:93 grease__over:49
grease_all:49 great_$:-89 great_job:-110 gusto:133 guy_who:-51 guys_are:-48 guys_do:-47 ha:-74 habia:64
habia_dicho:103 hablar:-60 hablar__el:98 hable_el:55 hableme:-49 hableme_y:-53 hablo:62 hace:-69 hace_$:49
hace_falta:-52 hace_un:-77 had:86 had__get:-55 had_to:88 hanging:-46 happier:-74 happy:55 happy_with:55 hasta:-48
hasta__me:-51 hasta__vi:90 have__a:-52 have__to:-48 have_an:51 have_been:107 have_it:48 have_my:-97 have_never:-102
hay:-74 hay_que:-77 he:-82 hell:-97 here:-53 here_$:-69 hey:-73 hi:-56 hicieron_esperar:51 highway:53 hit:-53 hm:-71
home_$:-56 hora_ya:52 horas:105 hours__it:-50 hours__you:49 hours_is:-50 how__was:50 how_come:81 how_did:59 how_i:65
how_many:-162 how_much:-124 hoy:104 hubcap:54 human:-51 hung:120 hung__on:120 hung_up:120 i:132 i__all:-48
i__coming:-75 i__from:-51 i__home:55 i__my:-115 i__never:-136 i__not:-55 i__that:54 i__the:-67 i__today:188
i__told:77 i__up:-51 i__what:-50 i__with:53 i__your:-48 i_asked:74 i_came:52 i_cant:-57 i_did:-54 i_didnt:140
i_dont:88 i_feel:67 i_found:49 i_get:-61 i_got:113 i_had:47 i_hate:50 i_have:87 i_just:-72 i_keep:-51 i_know:-55
i_left:55 i_need:-76 i_never:-59 i_paid:70 i_said:-108 i_sat:127 i_talk:47 i_think:-57 i_took:-51 i_want:72 i_was:113
id__a:-46 id__it:98 id__to:-73 if:-58 if__like:89 if_i:-105 igual:63 ill__the:52 ill__there:56 ill__you:-56
ill_bring:59 im:126 im__coming:75 im__my:-56 im__of:157 im__the:-52 im__to:-77 im__work:81 im__you:89 im_a:-48
im_at:107 im_sick:75 im_still:126 in_$:-68 in__a:154 in__and:53 in__car:50 in__is:77 in__morning:150 in__out:-49
in__spring:46 in__waiting:-48 in__what:48 in_a:-151 in_and:-49 in_april:52 in_it:96 in_march:76 in_the:55 invoice:78
invoice_$:-89 ir:-49 is_$:-81 is__a:-110 is__again:73 is__done:-53 is__how:59 is__i:124 is__new:79 is__old:50
is__right:63 is__somebody:62 is__than:64 is__the:59 is__to:48 is__what:79 is_all:69 is_an:-93 is_been:-94
is_getting:121 is_gone:47 is_in:85 is_no:-74 is_not:-97 is_only:48 is_something:49 is_still:46 is_that:-99
is_this:-54 is_too:62 is_your:-87 ish:-106 issues:-64 it__a:-70 it__be:47 it__getting:126 it__i:-79 it__in:154
it__is:77 it__not:66 it__something:83 it__this:50 it__up:-66 it_and:-60 it_but:-57 it_going:-50 it_in:-136 it_is:121
it_last:-54 it_like:60 it_on:-66 it_right:128 it_still:77 it_thanks:46 it_that:67 it_took:47 it_under:54 it_what:54
it_you:70 jaja:-98 jala:-111 jale_$:49 jeje:-61 job_$:48 jump:-74 just__i:165 just__what:-91 just_curious:-52
just_got:47 keep__me:81 keeps:-47 keeps__up:-53 kept:154 key:65 key_$:52 keys:65 kill:-54 know_you:-48 la:105
la__con:-76 la__del:65 la__el:-63 la__era:82 la__mas:-70 la__no:100 la__pero:-63 la__si:-89 la__trae:60
la__ustedes:-88 la__vez:167 la__ya:-102 la_atencion:56 la_bateria:-52 la_bici:-52 la_cara:76 la_cuenta:151
la_factura:-54 la_manana:68 la_misma:-56 la_noche:98 la_otra:196 la_pila:-48 la_puerta:54 la_quiero:-53 la_semana:-55
la_senora:55 la_verdad:142 la_vez:75 las_$:-50 las__de:79 las__la:63 las__por:57 las_de:99 las_llantas:-104 last:86
last__and:52 last__you:104 last_month:-60 last_night:-101 last_time:189 last_visit:101 last_week:-95 late_$:-70
laughed_at:53 le:-226 le__a:71 le_hicieron:-86 le_pusieron:-54 le_voy:82 lease:-62 leaving:66 left:133 left_$:-113
left__the:-69 left_a:100 left_the:75 les:144 les__el:55 les__que:-51 les_aviso:-53 less:56 let:-70 lied:55 light:-54
light__on:48 light_came:-78 lights:-47 like_$:-50 like_a:79 like_that:-64 like_to:-60 line:-46 list_$:-71
lista_de:-49 llanta_$:72 llanta_de:55 llantas_$:-78 llego:-54 llegue:54 lleno:56 lleno_de:56 lo:-67 lo__a:-69
lo__ahi:114 lo__asi:-51 lo__ayer:117 lo__con:158 lo__el:-65 lo__hacer:49 lo__lo:-52 lo__me:51 lo__no:67 lo__por:-73
lo__que:-108 lo_arreglaron:-82 lo_chocaron:-53 lo_hicieron:-86 lo_lleve:63 lo_llevo:-46 lo_mismo:81 lo_que:95 lock:46
lock_key:51 locked:48 lol:-112 lol_no:-53 look__a:49 look__my:-57 look_at:-74 look_like:49 looking:-48 looks__a:53
looks_like:53 loose:98 loose_$:89 los:-81 los__dias:51 los__me:-86 los_mensajes:-71 lose:68 lose_my:70 lost_my:60
lot:153 loud:52 low_$:57 lunes_$:-61 lunes__a:48 lunes_y:57 luz_del:-46 m:54 maam:-58 makes:118 makes_the:48
mal__no:-78 mal_el:-96 mal_servicio:106 malo:-91 man:54 man__me:-60 manager:49 manana_$:-53 manana__me:47 mandan:57
mandar:-51 mandaron:52 manden:-100 manden_nada:-86 mandenme:121 manners:102 mano:76 many:82 many_texts:177
many_times:-56 march:51 mas:65 mas_para:75 mas_por:-56 mas_que:88 mats:50 may:-83 me:164 me__a:-54 me__ahi:51
me__algo:115 me__alguien:-59 me__already:71 me__and:98 me__bien:98 me__call:-46 me__cambiaron:-49 me__con:81
me__en:78 me__esperar:51 me__hasta:78 me__hicieron:-47 me__horas:85 me__how:49 me__i:-54 me__in:119 me__june:-53
me__la:86 me__last:87 me__mas:-208 me__me:74 me__mensajes:116 me__mi:-62 me__muy:-59 me__no:-98 me__oil:-112
me__que:54 me__si:59 me__sin:58 me__tan:84 me__the:-56 me__una:-57 me__week:104 me__with:-47 me__you:-60 me__your:-77
me_a:57 me_again:-146 me_and:-71 me_cobraron:54 me_da:-96 me_dejo:82 me_entregaron:64 me_escriban:79 me_escriben:119
me_esperen:-46 me_espero:-46 me_every:193 me_explica:-69 me_for:83 me_gusto:167 me_hicieron:89 me_i:-123 me_in:-78
me_it:88 me_lo:-86 me_off:-122 me_olvido:-46 me_out:-56 me_pagan:46 me_queda:-55 me_quede:-75 me_quedo:-60
me_robaron:-50 me_sale:-51 me_salio:73 me_so:271 me_some:-56 me_stuff:58 me_tienen:181 me_today:84 me_what:-49
meant:-79 meh:113 mejor:-85 mejor__lo:-50 menos:59 mensaje:83 mensajes_$:-191 mes:60 messages_$:-166 mi:105 mi__de:92
mi__me:-84 mi__no:64 mi_carro:81 mi_ex:79 mi_telefono:-58 mil_gracias:67 mil_y:-69 mil_ya:70 min:70 mine:-77
minute:-46 minutes:68 minutes_$:-52 misma:-56 mismo:82 mismo_dia:-73 missing:103 mm:-61 molesto:82 mom:49 month_$:-74
month_is:121 more:112 more_$:-104 more_of:-52 more_texts:-64 morning_$:86 morning_for:55 mostrador:89 mouse:52
much_is:-52 muchachos:-64 muchachos_$:-64 muchos:143 must_have:-97 muy:94 muy_bien:-77 muy_contento:-97 muy_mal:82
muy_temprano:48 my:195 my__at:-47 my__back:139 my__for:-66 my__go:56 my__has:84 my__i:-54 my__in:-55 my__is:-91
my__it:48 my__no:47 my__refund:-83 my__this:-51 my__to:-52 my__was:88 my__yesterday:-76 my_appointment:-102
my_back:46 my_bill:127 my_bumper:67 my_car:207 my_card:69 my_dad:-53 my_day:-106 my_hood:63 my_hubcap:54 my_last:-74
my_mom:48 my_money:58 my_oil:149 my_old:-49 my_radio:89 my_schedule:-73 my_seat:79 my_son:-62 my_tax:-83 my_tires:91
my_whole:-75 nada:78 nada_$:195 nada_mas:-55 nadie:208 nadie_me:77 necesito:-59 need:-217 need_the:-50 needed:72
needed_$:-59 needs:70 needs_to:53 nel:74 never:49 never__me:64 never__you:-70 never_been:-102 never_mind:55
never_want:-73 new_$:51 new_one:-49 next:-89 next_time:-74 ni_la:46 ni_me:163 ni_se:-65 ni_un:-65 night_$:86
night_and:-121 nights:46 nights_$:62 nine:89 ninguno:59 no:53 no__a:-104 no__ahi:49 no__at:-100 no__bien:161
no__como:-64 no__con:67 no__de:-117 no__en:134 no__escriban:141 no__esperen:-46 no__gusto:167 no__just:-93
no__last:137 no__lo:82 no__manden:-59 no__me:98 no__mensajes:-67 no__messages:-72 no__mio:47 no__ni:-76 no__no:-107
no__por:-89 no__que:-71 no__si:-77 no__tengo:46 no__texts:-127 no__the:60 no__to:73 no__vale:88 no__was:-47
no__you:-50 no_and:46 no_como:117 no_complaints:-90 no_es:-55 no_estoy:55 no_frena:-54 no_issues:-64 no_it:138
no_keep:-80 no_les:60 no_manden:-79 no_me:-54 no_more:-242 no_not:-56 no_one:193 no_puedo:-49 no_quede:155
no_quedo:256 no_quiero:-68 no_se:55 no_tengo:-61 no_thanks:-49 no_the:89 no_todavia:87 no_trabajo:-53 no_y:106
no_you:133 nobody:156 nobody_here:-91 noche:106 noche_$:122 noise_$:48 none:79 noon:47 noon_$:-76 noon__is:59 nop:57
nop_$:57 not:208 not__after:84 not__car:-114 not__customer:-59 not__now:-65 not__the:71 not__this:-57 not__to:-134
not__with:94 not_a:-84 not_at:51 not_doing:-51 not_going:222 not_happy:241 not_me:-81 not_my:-136 not_now:-55
not_really:88 not_the:-66 not_to:-47 not_today:-103 not_worth:-49 nothing:78 nothing_$:232 now:-140 now_$:-47
now__me:-68 now_i:72 now_you:69 number:-47 number_$:-50 numero:-108 nunca:116 nunca_me:179 nut:58 o:-92 o_es:-54
o_que:100 ocupo:-46 of:111 of__reminders:90 of_it:-61 of_my:-70 of_the:-80 of_these:63 of_you:-61 off_$:102
off_the:-52 off_your:-61 office_$:71 often:69 oh:129 oh__another:71 oi:71 oil__came:48 oil_cap:86 oil_changed:-47
oil_light:92 ojala:94 old_$:50 on_$:-65 on__driveway:66 on__list:108 on__phone:97 on__refund:95 on__way:-97 on_a:65
on_friday:50 on_it:-91 on_me:-63 on_my:82 on_the:66 on_them:49 on_time:97 on_you:-67 once:85 one:88 one_$:-136
one__a:73 one__and:96 one__the:-50 one_i:-79 one_in:-52 one_of:-95 one_text:78 one_with:-63 only:-56 open:-70
open__the:-56 option:48 option_$:48 or:-135 other_day:56 otra:56 otra__me:63 otro__mas:109 otro_taller:-155 out:47
out_$:47 out__the:-62 overcharged:47 own:52 pagan:46 pague:101 para_nada:-73 para_un:99 para_una:58 parada:62
parar:-52 parked:64 part:58 pasar:-51 pass:-53 past_$:-63 pay:-47 pay_for:53 paying:-96 pedal:-55 pedi:79 pense:-105
people:66 people_$:-164 people_are:142 peor:185 perdon:-52 permission:-51 permission_to:-48 pero_a:52 pero_con:-48
pero_la:61 person_$:-52 pesimo:82 phone_call:62 phone_me:-67 pick_up:-60 picked:50 pie:-94 pila:-48 piso:65
please__it:54 please__my:-68 please__text:69 please_dont:77 please_stop:-52 plenty:79 pls:-48 plug:54 poca:170
poner:193 pongan:102 por:55 por__atencion:-95 por__el:133 por__es:61 por__me:119 por__no:-208 por__y:51 por_ahora:-59
por_la:-102 por_lo:96 por_mi:58 por_nada:254 por_su:48 por_telefono:49 por_un:62 porq:79 porque_ustedes:59 precio:-72
precio__me:-87 precio_que:-125 pregunta:-53 pregunta_$:-47 price:-89 primero_$:-46 problem:60 promised:59 puedo:-83
puerta:48 pues:87 pues_no:145 pues_ya:-93 punto:85 punto_$:75 push:-65 pushed:60 put:122 put_me:-71 put_the:93 que:98
que__con:163 que__de:162 que__el:-48 que__era:57 que__escriban:-62 que__hicieron:-80 que__la:54 que__mal:-112
que__malo:-69 que__no:108 que__otra:107 que__otro:111 que__se:-55 que__soy:66 que_antes:170 que_bonito:79
que_dias:-49 que_el:-66 que_es:-92 que_esperar:-61 que_falta:66 que_fue:-70 que_le:-150 que_mal:69 que_no:49
que_se:-77 que_tan:-123 que_tengan:-47 que_yo:60 quede:181 quede_muy:150 quede_sin:-51 quedo_bien:85 quick:-58
quien:64 quienes:-72 quienes__ustedes:-53 quienes_son:-72 quiere:-48 quieren:180 quiero__con:-56 quiero_nada:-112
quisiera:-49 quit:63 quitenme__su:64 quote_$:125 radio:81 ran:-46 rather__to:63 rd:63 real:59 real_person:59
really:99 really_$:49 recibir:-65 recordatorios:53 records_$:-52 red:-82 reembolso:66 refaccion:54 refund_$:55
regresaron:61 remind_me:-62 repair:87 respeto:96 ridiculous:46 right_$:-81 right__i:-80 right__you:71 right_after:70
right_now:-93 rim_$:-49 rip:138 ripped:127 robaron:-66 robaron_la:52 robo:66 robot:-57 rock:-65 rojo:-65 rude:70
rueda:91 ruido:-60 runs_like:-46 sacan:133 said:69 sale:-145 salgo:-47 sali:77 salio:61 salir:-61 same:97 same_as:-83
same_day:-53 sat:93 saved:-74 say:90 schedule:-72 scratch_me:-82 se__de:66 se_las:53 se_les:47 se_lo:57 se_los:57
se_me:-179 se_que:-60 se_queda:85 se_tardan:-71 se_vale:88 seats:94 see:-93 see_you:-67 seguido:105 segun:-104
semana_$:92 semana_pasada:-53 semanas:50 send:-93 senor_$:-79 shakes:-59 shop:86 shops:-73 should_i:-51 shut_$:-62
si_$:-63 si__estoy:48 si__me:64 si__pero:69 si__si:52 si_ahi:86 si_y:-86 sick:169 sick_of:200 siempre:51
siempre_no:-92 siento:55 sigo:60 sigue:114 sigue_igual:66 sin:92 since_$:-131 since_the:63 sirve:-60 six:91 sloppy:75
slow:98 so:67 so_$:-46 so__at:117 so_far:-67 so_i:-86 solo:-47 some:107 some_time:-56 somebody__me:-59
somebody_else:-47 someone__me:-47 someone__my:58 someone_call:-58 sometime:-53 somewhere:82 son:147 son__de:109
son_las:86 son_ustedes:-53 soon:-47 soy:-155 soy_la:-56 speak__the:-46 speak_with:-59 still:89 still_$:-133
still__about:160 still__on:94 still_on:-127 still_waiting:94 stop:-101 stop_texting:54 stopped:-46 stuff:83
stuff_$:49 su:92 su__es:47 such:68 suena:-75 supposed:46 supposed__be:46 supposed_to:46 sure:-65 take__off:-55
take_me:-55 talked_to:94 taller_$:104 tan:130 tan__esta:-77 tan_mal:-58 tan_malo:-64 tan_seguido:147 tanto:110
tapon:58 tardan:-88 tarde_por:71 tax:-148 tax_refund:-83 te:-54 telefono_$:-63 tell_you:-69 temprano:83 temprano_$:98
ten:65 ten_$:58 tener:-47 tengo_la:52 text:74 text_$:-57 text__again:-74 text_list:-49 text_messages:-71 text_this:53
text_you:-146 texted:96 texting:-48 texting_$:-56 texting_me:85 texts:113 texts__a:51 texts_about:91 th:-58 than:52
thank:-74 thank_you:-75 thanks__nothing:187 thanks__the:-52 thanks_a:56 thanks_for:71 that__all:63 that__been:-66
that__the:77 that_car:-52 that_last:-56 that_name:-46 that_old:-50 that_one:-60 that_was:-92 that_you:-67
the__after:-47 the__and:-66 the__appointment:62 the__as:-138 the__call:50 the__came:-131 the__can:51 the__for:71
the__im:54 the__in:69 the__last:-81 the__light:48 the__no:-52 the__oil:69 the__on:54 the__one:98 the__still:97
the__text:56 the__that:-57 the__there:-47 the__thing:-47 the__up:58 the__what:-60 the__with:-60 the__yesterday:49
the__you:176 the__your:47 the_appointment:51 the_baby:94 the_brakes:46 the_car:-60 the_day:-59 the_early:-63
the_kid:84 the_light:-123 the_list:50 the_messages:90 the_morning:135 the_old:88 the_phone:142 the_quote:128
the_repair:56 the_same:-48 the_seat:-75 the_spring:46 the_th:-54 the_third:90 the_tires:-88 the_way:75 then:-53
there__a:69 there__i:53 there__you:-54 there_in:-56 there_when:63 there_with:53 these_reminders:88 these_texts:-54
they:101 they__it:-68 they__the:68 thing_$:-74 thing_to:78 think_$:88 think__is:-70 think_it:-50 think_you:-76
thinking:-46 third:131 this__a:-76 this__is:76 this__it:85 this__my:-52 this__please:57 this__the:62 this_going:59
this_is:114 this_isnt:-68 this_number:-56 this_phone:-98 this_place:71 this_time:73 this_week:121 three:145
through:100 through_$:-58 thurs:-50 thurs_at:-50 tienen:51 tienen_$:-59 til:-82 time__is:86 time__you:-70 time_and:63
time_i:57 time_you:76 times:167 to__a:-47 to__after:48 to__again:-56 to__back:52 to__me:146 to__person:63
to__shop:-66 to__the:50 to__there:-49 to__this:51 to__through:-61 to__with:105 to__you:-52 to__your:55 to_be:60
to_check:-56 to_know:65 to_my:96 to_pick:57 to_put:68 to_say:-55 to_somebody:-62 to_take:61 to_text:-49 toca:-48
todavia_no:-132 today_$:50 todo__con:-50 todo__dia:131 todo__orden:-73 todo_bien:-108 todo_el:109 todo_en:-73
todo_y:51 told:147 told_me:74 told_my:-81 too_$:-188 too_many:98 took:136 took__to:-71 top:-47 top_$:-90 top_off:123
trabajo:53 trabajo_no:126 trabajo_y:60 tratar:49 trato:52 treated:121 tres:123 tres__que:61 tres_veces:53 trust:204
tuesday_and:54 turn:-71 turned_into:56 tuve:61 tuve_que:61 twice:173 twice_$:-51 two:142 two_$:-81 two_hours:80
two_weeks:68 ultima__me:49 ultima_vez:-58 un:88 un__mas:-56 un_dia:93 un_foco:82 un_mes:-68 una:174 una__de:89
una__en:114 una__o:-86 una__que:56 una__y:79 una_hora:90 una_rueda:58 under:-82 uno:235 uno_$:52 up__the:87 up_on:71
up_the:-87 used_to:77 ustedes:82 ustedes_$:81 ustedes__mi:51 ustedes_no:89 ustedes_nunca:66 ustedes_y:62 uy:71 va:-58
vale:49 vale_$:78 van:64 vaya:-46 veces:142 veces_$:90 veces_que:-49 venden:-49 vender:106 venia:95 ver:102 ver_si:47
vez:79 vez_$:-111 vez__me:76 vez_me:70 vez_pasada:75 vi:90 vibra_$:52 vibrates:-72 vida:-51 vieja:67 visit:78
voy_a:-80 voy_me:105 voy_pero:130 vueltas:63 vuelvanme:-56 vuelvanme_a:-56 vuelvo:47 wait:-54 waited:124
waiting__my:-54 want__speak:72 want_to:-53 want_your:-47 was:166 was__a:-47 was__and:147 was__in:-46 was__last:-79
was__there:170 was_in:-160 was_it:77 was_just:141 was_that:-83 was_the:-68 was_told:76 wasnt:49 way:90 way_$:-53
way_too:117 we:-76 week:92 week_$:-120 week_is:97 weekend:-47 were_happy:-56 what:54 what__did:46 what__is:-50
what__it:91 what__that:-60 what__the:-95 what__wrong:-54 what__you:-137 what__your:-82 what_a:327 what_i:211
what_is:-148 what_it:-46 what_was:-89 wheel__key:51 wheel_is:-60 wheel_lock:51 when:-50 when__was:-65 when_do:-65
when_i:69 when_the:-49 where__the:47 where_is:47 while_im:109 who__are:-55 who__my:59 who_did:85 who_is:-99
who_you:-56 whoever:70 whoever_you:-109 why__you:102 why_do:82 why_is:68 why_not:-72 wife_$:49 will:-118 will__be:-50
will_you:-51 wiper:49 with:56 with_$:82 with__in:47 with_a:53 with_someone:-52 with_these:-64 with_your:161 woke:70
wonderful:101 work:85 work_$:107 work_nights:63 worse:106 worse_$:174 worse_than:-71 worst:65 worth:-49 would:-82
would__to:-46 would_do:58 wouldnt:74 wow:183 write:46 write__down:112 wrong:59 wrong_person:-82 wrote:74 y:192
y__a:-50 y__carro:-85 y__es:-68 y__las:52 y__los:52 y__me:77 y__no:48 y__pusieron:70 y__que:-63 y__ya:77 y_ahi:-79
y_ahora:56 y_cuanto:-80 y_el:-111 y_hasta:-89 y_le:-55 y_luego:82 y_nadie:65 y_ni:147 y_por:-49 y_que:49 y_quiero:72
y_si:-68 y_ya:57 ya:47 ya_$:98 ya__con:-136 ya__dije:-83 ya__las:48 ya__mi:47 ya__quiero:49 ya__voy:60 ya_es:67
ya_me:-47 ya_ni:56 ya_paso:79 ya_que:-93 ya_se:164 ya_van:78 yeah_$:-47 yes:-92 yes_$:-113 yes__on:-49 yes__the:-50
yes_and:72 yes_still:-49 yo__los:64 yo_no:-46 you:242 you_$:-251 you__a:55 you__are:94 you__at:96 you__do:-48
you__for:-70 you__have:-101 you__my:70 you__so:134 you__stop:-47 you__texting:109 you__to:113 you__what:78
you_again:47 you_are:-89 you_bet:-53 you_call:-53 you_charge:-102 you_dont:-116 you_even:-65 you_fixed:-48
you_folks:-67 you_gave:77 you_got:-97 you_have:-72 you_keep:128 you_left:150 you_must:61 you_never:94 you_open:-58
you_overcharged:47 you_people:175 you_put:84 you_said:159 you_say:120 you_shut:-62 you_still:-77 you_take:66
you_text:156 you_there:-53 you_want:-46 you_when:-46 your:158 your__and:143 your__desk:90 your__for:-53 your__i:56
your__on:48 your_business:-59 your_customer:-74 your_front:90 your_hours:-73 yours:-59 youve:86 youve__me:70
"""
