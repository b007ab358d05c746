"""What speaks for and against `symptom`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "symptom"
BIAS = -125
WEIGHTS = """\
#abaj:48 #abel:64 #aben:-91 #abia:-78 #able:85 #abro:263 #acan:-50 #acce:47 #aced:-53 #acei:88 #acel:105 #acen:-147
#ache:121 #acho:54 #acia:90 #acio:45 #adel:-60 #adem:51 #aden:125 #adli:71 #ados:-69 #agai:56 #agar:45 #ager:-46
#agra:-51 #agua:188 #ague:52 #ahea:-86 #aile:-76 #ailp:57 #airb:108 #aire:108 #ajar:60 #ajer:58 #akes:159 #alam:65
#alan:111 #alar:-56 #aldr:58 #alen:64 #ales:129 #algo:68 #algu:48 #alie:82 #alli:58 #almo:56 #alos:80 #alre:-62
#also:107 #alte:55 #alto:60 #alum:98 #aman:86 #amas:-58 #amat:75 #ambr:100 #amin:168 #amme:46 #amos:-112 #ampa:78
#ampo:75 #anas:-74 #anca:110 #ance:-56 #anco:128 #anda:100 #andb:143 #ande:-129 #andi:45 #ando:141 #anec:97 #angi:53
#anic:87 #anoc:85 #answ:-45 #anyw:-48 #anza:57 #apag:153 #apar:-73 #aper:-47 #apid:70 #apor:75 #aque:-61 #arab:-60
#arag:53 #arca:-49 #arch:82 #arco:76 #arej:59 #argo:77 #arks:74 #arla:61 #arle:139 #arlo:62 #arni:-151 #aron:-184
#aros:45 #arpo:78 #arra:207 #arro:-53 #arte:105 #arts:-104 #asad:-50 #asar:95 #asca:64 #asem:58 #ashb:52 #ashe:-104
#ashi:46 #atbe:102 #atel:96 #ater:-75 #ates:66 #atin:98 #atro:-69 #atte:59 #auge:55 #augh:61 #aunq:51 #aust:47
#auto:52 #avis:-51 #ayed:65 #ayer:104 #ayud:59 #bach:88 #back:46 #baja:-50 #bajo:144 #bala:-48 #bbin:65 #bble:63
#bear:88 #beat:-74 #been:59 #bele:64 #belo:50 #belt:58 #biar:-76 #bida:53 #bido:46 #biem:-57 #bike:-54 #bing:117
#bios:174 #blac:108 #blan:45 #blar:59 #bles:98 #blew:64 #blin:136 #blow:79 #boar:51 #bols:89 #bomb:113 #bone:83
#boni:-53 #book:-52 #boom:55 #borr:69 #bota:169 #both:64 #brak:131 #brat:89 #brea:-58 #brec:66 #bril:45 #brin:62
#bris:-60 #brok:119 #bump:57 #buzz:118 #caba:59 #cabl:101 #cada:127 #cade:65 #cake:47 #cale:106 #cali:66 #camb:-75
#came:55 #cami:94 #cans:-46 #carp:59 #carr:75 #cars:-61 #cart:86 #casa:-61 #casc:64 #casi:143 #catc:76 #caug:68
#ccep:45 #ccid:-47 #ceit:88 #cele:81 #cenc:-49 #chai:56 #chan:-80 #char:104 #cher:53 #ches:94 #chil:-48 #chis:64
#choc:71 #chof:45 #chor:96 #cias:-61 #cida:53 #ciga:-64 #cili:73 #ckin:97 #clam:69 #clim:48 #clun:139 #coas:59
#coch:45 #coff:51 #cola:93 #cold:85 #colo:50 #como:112 #comp:-55 #cond:50 #conf:-57 #cord:-63 #coug:144 #cove:-49
#cran:134 #crat:-60 #crea:70 #croo:76 #ctic:102 #ctor:-59 #cuad:50 #cual:-72 #cuch:84 #curb:73 #cure:-64 #curi:-48
#curv:50 #dado:-45 #dame:-55 #dark:48 #dash:71 #dded:77 #deal:-47 #deba:62 #dece:-45 #deje:-49 #dela:-48 #dena:73
#ders:95 #desc:92 #diad:53 #dice:52 #dida:-60 #didn:65 #dido:-52 #died:113 #dien:64 #dier:-70 #dife:52 #dijo:73
#dill:46 #dime:-52 #dimo:-59 #dips:75 #dirt:-54 #dles:45 #dlig:84 #does:46 #doin:-49 #dont:65 #door:-45 #dora:-53
#dorm:-45 #dosc:-71 #down:127 #drag:49 #dras:49 #drea:-53 #dria:67 #drip:58 #drop:68 #eadl:163 #eads:65 #eady:-73
#eaki:-67 #eaks:-74 #eali:67 #eami:80 #eams:56 #eand:121 #earl:110 #ease:-71 #eate:-103 #eats:-69 #ebaj:62 #ecal:62
#echa:47 #ecio:56 #econ:70 #ecto:-47 #edal:140 #edde:47 #edle:88 #eedl:88 #eels:104 #eeps:76 #eeri:106 #efie:-46
#egad:107 #egro:50 #egue:57 #eith:-46 #ejan:-59 #ejen:-52 #ejor:-105 #elen:-50 #eler:75 #elle:-45 #elli:-54 #eloc:58
#elow:50 #else:-61 #elta:51 #elto:-54 #embl:70 #emin:-71 #emio:-52 #emos:-123 #empe:90 #empt:104 #enan:85 #enar:92
#ence:54 #enci:48 #enda:-48 #ende:124 #endi:-128 #enen:-47 #enfr:45 #enla:-72 #enos:-97 #ense:69 #enta:114 #enti:-56
#ento:-48 #entr:58 #eopl:45 #epor:-61 #erad:50 #erce:86 #erde:160 #eres:-55 #erfe:-59 #erhe:62 #erin:106 #erle:-82
#erre:-45 #erro:64 #ersa:54 #erse:128 #ervi:48 #ervo:64 #erza:107 #esad:54 #esca:65 #esco:49 #escu:159 #esio:102
#esnt:96 #espe:-57 #espo:70 #essi:-71 #essu:52 #esta:86 #esto:-99 #etal:124 #eteo:74 #etra:109 #etty:75 #evas:-94
#ever:107 #eway:75 #excl:114 #exha:47 #fect:-60 #feel:104 #fere:60 #ffee:51 #fier:60 #fila:-56 #fill:79 #filt:-67
#fing:52 #firm:-70 #fixe:-81 #flat:57 #floo:-64 #flui:-93 #flus:-72 #flyi:65 #forg:-54 #fren:311 #frio:85 #from:81
#fter:48 #fuer:109 #fume:92 #furi:46 #fuse:67 #gado:115 #gain:56 #gara:47 #garo:120 #gast:-56 #gate:50 #gaug:55
#gear:152 #gery:-51 #ghin:73 #ghts:51 #ging:94 #glan:-51 #goes:132 #goin:57 #goma:96 #gone:-52 #gote:125 #grad:-50
#grav:81 #grea:-167 #gree:70 #grin:111 #groa:71 #grua:65 #gund:58 #gunt:-79 #habi:-78 #habl:-56 #hace:-55 #haci:66
#hado:-54 #hago:-64 #haha:-110 #hain:57 #hani:71 #harc:106 #hard:65 #haro:-67 #hast:54 #haus:47 #hboa:52 #head:126
#hear:108 #heat:59 #hera:53 #hese:-68 #hich:-106 #hift:149 #high:60 #hill:222 #himm:88 #hing:81 #hini:52 #hirr:50
#hisp:66 #hizo:-69 #hoco:71 #hoev:-53 #hofe:45 #hold:104 #hole:89 #hone:-83 #hopp:50 #horn:107 #horr:77 #hors:51
#hour:-59 #hred:47 #hree:49 #huel:88 #humi:70 #humo:77 #hunk:130 #hurt:-69 #hybr:64 #iapa:-88 #iaro:-55 #iato:-46
#ible:48 #ibra:130 #icen:-84 #icke:64 #icki:53 #icon:75 #iden:-47 #ides:68 #idle:129 #idnt:65 #idos:-160 #iedo:56
#iend:139 #iene:85 #ient:75 #ierd:84 #iere:68 #ierr:51 #iert:-68 #ifer:52 #iffe:61 #ifte:68 #ifts:149 #igar:-64
#igue:117 #iled:-63 #iler:-54 #ilpi:57 #iltr:-49 #imbi:52 #immi:101 #imos:-56 #impi:-49 #inan:47 #inbo:125 #indo:-48
#inea:-46 #ingu:-141 #inin:45 #iniv:-62 #inke:111 #inki:-50 #inks:47 #insp:-52 #inte:-46 #into:55 #intu:231 #iona:77
#iono:75 #ions:-54 #iper:-127 #irad:125 #irba:108 #irme:-71 #irri:63 #ishy:57 #isim:53 #isit:-72 #ispa:66 #isse:45
#ista:101 #istl:53 #isto:-68 #ithe:-46 #itse:119 #itte:-88 #itti:73 #ittl:68 #ivan:-62 #iver:-76 #ivew:76 #ixed:-81
#jaja:-127 #jale:63 #jalo:62 #jarl:60 #jaro:80 #jenl:-47 #jito:50 #jueg:52 #jump:85 #junk:-76 #junt:-51 #keep:57
#kers:49 #kill:-86 #kind:51 #king:98 #knee:-110 #knoc:-57 #kyar:-46 #lack:108 #lado:83 #lamb:100 #lamp:106 #lanc:53
#land:56 #lant:95 #larm:-62 #latc:53 #lava:-53 #lawn:-47 #lder:153 #ldin:-57 #ldri:58 #leak:59 #leep:-51 #left:-54
#lego:-78 #legu:56 #lend:-50 #lent:50 #lept:-61 #lera:69 #lers:-54 #less:-79 #lgui:56 #libr:-55 #lice:-49 #lick:141
#lide:62 #lido:80 #lien:48 #lige:-47 #ligh:56 #like:90 #limb:57 #limp:103 #lind:82 #ling:78 #link:139 #list:76
#lito:47 #litt:68 #live:-50 #llam:-54 #llas:-55 #ller:-68 #llet:-47 #llin:-87 #llow:94 #lmos:66 #loci:59 #lock:-63
#loma:57 #lonc:61 #lone:71 #loor:-59 #lora:126 #losi:81 #lost:50 #lows:173 #lpet:100 #lpip:57 #lrea:-62 #ltim:-52
#ltos:69 #ltro:-49 #luce:80 #luid:-93 #lumb:79 #lunk:139 #lush:-72 #lyin:54 #made:50 #maki:48 #malo:74 #mand:-78
#mane:82 #marc:51 #mark:88 #mate:-72 #mati:87 #mber:-64 #mbia:-87 #mbid:46 #mbio:98 #mbol:61 #mbra:98 #mbre:81
#mech:71 #mejo:-119 #mell:68 #mers:48 #meta:103 #mete:200 #mied:56 #mies:101 #milk:49 #mina:70 #mind:-79 #mini:-62
#mito:56 #mmie:101 #mode:146 #modo:47 #mofl:51 #moke:45 #moki:-120 #moni:72 #morn:115 #mowe:-65 #mpez:65 #mpia:-117
#mpin:100 #mple:-46 #muer:62 #mush:111 #nada:-56 #nage:-46 #nail:56 #nale:172 #nand:126 #nast:-52 #nato:57 #ncak:49
#ncho:84 #ncie:99 #ndan:51 #ndar:-47 #nded:-84 #nder:65 #ndid:-87 #ndim:-52 #ndio:87 #ndos:69 #near:51 #nece:-63
#neci:96 #negr:53 #next:-90 #nfir:-48 #nfor:-49 #nger:57 #nges:139 #ngin:101 #ngun:-158 #nica:-49 #nido:54 #nigh:52
#ning:-63 #niva:-62 #nker:102 #nkya:-46 #nner:-50 #nock:-57 #nois:-94 #noon:-73 #norm:76 #nose:86 #nque:83 #nsen:64
#nspe:-52 #nswe:-45 #ntad:-47 #ntas:-174 #nten:-78 #ntie:-61 #ntos:-80 #ntra:74 #ntur:210 #nuev:-171 #nuts:87
#nvie:-49 #nywa:-47 #oane:-48 #oard:51 #oast:75 #oats:71 #obbl:62 #oche:78 #ocid:51 #ocke:-48 #ocks:63 #ocup:-78
#oday:47 #oesn:96 #oeve:-53 #offe:51 #ofle:51 #oily:90 #oint:45 #oise:-64 #oked:67 #oken:65 #olan:81 #oldi:-52
#olit:73 #olor:52 #olsa:89 #ombe:83 #ombr:-45 #omet:77 #onal:128 #onan:67 #once:-104 #onch:52 #onde:53 #onea:99
#onfi:-50 #onga:-70 #onid:62 #onke:50 #onte:-56 #ooke:67 #ooks:85 #oone:67 #oors:53 #oose:59 #oper:53 #opis:46
#ople:45 #oppe:89 #oppi:-46 #oqui:57 #oran:51 #orks:67 #orma:75 #ormi:-45 #orni:98 #orqu:65 #orri:83 #orro:68
#orse:89 #osci:-71 #osie:77 #osin:81 #osti:56 #osto:-81 #otad:85 #otal:-45 #otan:47 #otea:126 #oter:45 #otor:-68
#otro:-51 #ouch:51 #ough:125 #over:82 #owar:52 #owin:55 #paga:109 #pain:66 #panc:49 #pape:-60 #parc:-48 #pare:76
#park:166 #paro:90 #paso:60 #pati:53 #peda:127 #peed:116 #pend:-65 #peop:45 #perd:-56 #perf:-59 #pero:113 #pers:-47
#pete:74 #pezo:105 #phil:75 #phon:-84 #piap:-88 #pido:67 #pier:57 #pila:121 #ping:121 #pink:48 #pint:-67 #pipe:50
#plan:-59 #plug:-55 #poki:89 #ponc:68 #pone:-63 #pool:-61 #popp:52 #porq:119 #pour:101 #powe:183 #pped:56 #prec:-68
#preg:-79 #prem:-52 #pren:206 #pres:134 #pret:75 #pric:-54 #prin:-51 #prof:-56 #prom:-47 #pudd:53 #puer:-81 #pull:-80
#pump:169 #purr:-72 #puse:-91 #puso:77 #putt:-57 #qued:-113 #quej:57 #quis:83 #raba:-86 #rabr:-60 #rach:107 #rada:121
#rade:-57 #rage:49 #raia:-47 #rail:64 #rain:119 #rake:99 #ramp:123 #ranc:138 #rank:126 #rant:-58 #raro:105 #ratc:-60
#rate:60 #rato:-49 #rave:78 #raye:87 #rbag:102 #rcer:76 #rcha:59 #rche:92 #reak:-54 #reas:-85 #reat:-53 #reca:45
#rech:46 #redd:76 #reen:69 #refi:-46 #rega:93 #regu:-53 #relo:-103 #remi:-123 #rena:187 #rend:184 #repo:-94 #resi:106
#ress:105 #retr:89 #reve:208 #rfec:-59 #rger:-52 #rhea:62 #rice:-51 #rien:95 #rifa:-54 #righ:-136 #rill:54 #rinc:87
#rind:111 #ring:98 #rint:-48 #ripp:85 #risa:-60 #risi:53 #rite:-67 #rmal:62 #rmen:-56 #rmom:60 #rnat:60 #rnig:50
#rnin:45 #roan:71 #roce:50 #rock:139 #rofe:-56 #roja:76 #rojo:136 #roke:108 #rona:72 #roni:62 #roof:-55 #rook:76
#ropp:-48 #rops:155 #rose:-73 #rota:-48 #roto:-53 #roug:52 #rpor:49 #rrac:107 #rran:46 #rrea:63 #rren:-57 #rret:49
#rrib:55 #rrie:71 #rros:-75 #rses:70 #rted:72 #rter:61 #rtes:-62 #rued:51 #ruid:-77 #rumb:45 #runn:45 #rven:54
#rvir:100 #ryer:-68 #ryin:-54 #sabe:-59 #sado:-54 #said:-65 #sala:-63 #sald:58 #sale:125 #salg:-46 #sali:64 #sand:-67
#saqu:-52 #says:78 #scab:62 #scar:46 #scie:-71 #scra:-87 #scre:120 #scuc:84 #seat:112 #seco:122 #seda:-85 #seen:-75
#self:89 #sell:-84 #send:-57 #seno:49 #sera:96 #serv:103 #shbo:52 #sher:-111 #shes:64 #shif:149 #shim:88 #shoe:53
#shot:58 #shre:47 #shut:116 #sign:78 #sigu:105 #sinc:51 #sing:148 #sits:-64 #slee:-51 #slep:-61 #slic:114 #slid:111
#slip:94 #slow:109 #smel:68 #smok:-75 #sobr:60 #sola:96 #soli:88 #solo:93 #some:70 #sona:53 #soon:67 #sorr:-53
#spar:117 #spas:68 #spec:-61 #spee:116 #spit:126 #spon:48 #spot:-55 #spre:63 #sque:-46 #squi:59 #sses:-52 #ssio:-64
#ssur:52 #stal:58 #star:-57 #stat:-63 #stea:109 #stee:157 #step:118 #stil:60 #stio:-49 #stle:51 #stop:134 #stuc:-48
#suav:-56 #sube:116 #subi:138 #surg:-47 #swam:64 #swap:-70 #swer:-45 #symb:53 #tado:46 #tail:231 #tall:54 #tamb:67
#team:96 #teer:157 #tele:-45 #tely:134 #temp:159 #tera:60 #terc:91 #tere:-61 #teri:45 #ters:95 #test:61 #text:-122
#them:-49 #thes:-68 #they:-114 #thos:-63 #thre:85 #tina:54 #ting:53 #tira:142 #tita:46 #toda:85 #told:62 #toma:-63
#tope:97 #topi:46 #tops:121 #tors:-74 #tory:-60 #tosi:105 #tota:-45 #touc:76 #towa:52 #towe:-86 #trab:-58 #trac:208
#trad:-57 #trae:115 #tran:87 #tren:-73 #trie:54 #trol:73 #tron:163 #tros:-47 #trun:-46 #tsel:119 #tten:-71 #ttle:51
#tuck:-48 #tula:-54 #tumb:78 #tura:-50 #turn:156 #tuvi:88 #twic:77 #type:-49 #uand:67 #uant:-47 #uart:-53 #uave:-56
#ubid:53 #uces:58 #uche:54 #ucho:83 #udar:-45 #udde:61 #uddl:53 #uden:46 #ueak:-169 #ueal:124 #uedo:-87 #uego:48
#uent:-53 #uerz:104 #ueva:-135 #ughi:73 #ughs:53 #uida:-46 #uier:73 #uiet:-77 #uish:50 #uiso:53 #uita:92 #uite:-53
#uito:89 #uits:-47 #ulde:91 #ulle:-92 #ulls:145 #ulti:-52 #umba:51 #umbe:-60 #umbi:46 #umbl:66 #umbr:137 #umes:92
#umit:70 #umps:77 #unda:46 #unde:78 #unds:-93 #unge:147 #unki:59 #unky:-46 #unni:45 #unqu:50 #uphi:75 #upse:-46
#ured:-84 #urin:117 #uris:58 #urni:81 #urns:125 #urrs:-72 #urva:50 #used:58 #ushy:70 #uste:-129 #usto:-55 #utop:46
#utti:-79 #uvie:81 #vapo:75 #vece:76 #velo:59 #vend:-146 #veng:-57 #vent:63 #verh:62 #vern:50 #vers:63 #very:77
#vewa:76 #vibr:150 #vida:-47 #vien:94 #vier:47 #view:65 #visi:-95 #wall:122 #wamp:64 #want:-50 #wapp:-71 #ward:94
#warn:-151 #wash:-76 #wear:-97 #well:-46 #went:80 #were:-88 #what:-88 #whic:-119 #whin:90 #whis:53 #whoe:-53 #whol:62
#wice:77 #wild:-57 #wing:50 #wipe:-129 #wire:138 #wise:79 #with:-54 #wobb:62 #wors:58 #writ:-67 #xcla:114 #xhau:47
#ybri:64 #ymbo:53 #your:-112 #yway:-47 #zumb:68 %again_later%away:-64 %again_later%bring:50 %again_later%busy:-65
%again_later%car:-83 %again_later%car_part:85 %again_later%do_it:55 %again_later%elsewhere:-60
%again_later%how_long:-73 %again_later%leave_me:69 %again_later%message:-48 %again_later%noise:157
%again_later%opening:-47 %again_later%question:-80 %again_later%shake:191 %again_later%shift_it:-80
%again_later%staff:-76 %again_later%start_again:58 %agree:-81 %agree%away:70 %agree%bad:125 %agree%busy:-53
%agree%call_off:61 %agree%car:-75 %agree%do_it:-134 %agree%doubt:-73 %agree%fails:-72 %agree%gone_car:-52
%agree%leak:78 %agree%leave_me:-68 %agree%meaning:-48 %agree%odometer:58 %agree%pay_day:-62 %agree%question:124
%agree%shake:57 %agree%smoke_smell:60 %agree%thanks:-58 %away:-73 %away%bad:49 %away%bring:-58 %away%busy:-86
%away%car_part:76 %away%do_it:-136 %away%elsewhere:-60 %away%fails:-78 %away%gone_car:-66 %away%leave_me:-91
%away%odometer:-49 %away%shake:53 %away%shift_it:56 %away%smoke_smell:104 %away%thanks:-46 %bad:-47 %bad%call_off:-53
%bad%car:-91 %bad%car_part:-62 %bad%do_it:62 %bad%fails:-61 %bad%leak:160 %bad%leave_me:-79 %bad%machine:58
%bad%noise:52 %bad%pay_day:-111 %bad%shake:62 %bad%wrong_one:-60 %bring:-81 %bring%car:61 %bring%car_part:111
%bring%do_it:-81 %bring%elsewhere:-59 %bring%how_long:67 %bring%leave_me:138 %bring%lift:58 %bring%noise:104
%bring%odometer:78 %bring%opening:-64 %bring%place:94 %bring%question:116 %bring%refuse:50 %bring%staff:-65
%busy%car:-81 %busy%doubt:62 %busy%gone_car:-56 %busy%leave_me:78 %busy%question:78 %busy%thanks:74
%call_off%fails:-100 %call_off%gone_car:82 %call_off%how_long:118 %call_off%leave_me:64 %call_off%meaning:79
%call_off%money:47 %call_off%noise:-49 %call_off%odometer:-153 %call_off%on_way:83 %call_off%opening:-70
%call_off%phone:62 %call_off%refuse:76 %call_off%smoke_smell:57 %call_off%staff:-125 %call_off%who:47
%call_off%wrong_one:-96 %car:74 %car%do_it:-59 %car%fails:171 %car%family:-65 %car%gone_car:-64 %car%money:-45
%car%noise:193 %car%pay_day:99 %car%phone:49 %car%shift_it:49 %car%smoke_smell:61 %car%start_again:80
%car%thanks:-105 %car%who:-60 %car%wrong_one:-79 %car_part:349 %car_part%do_it:-139 %car_part%doubt:129
%car_part%fails:54 %car_part%family:-52 %car_part%how_long:110 %car_part%leak:51 %car_part%leave_me:171
%car_part%lift:66 %car_part%money:-96 %car_part%noise:-147 %car_part%opening:159 %car_part%pay_day:101
%car_part%phone:192 %car_part%place:138 %car_part%refuse:54 %car_part%shake:181 %car_part%smoke_smell:139
%car_part%staff:-108 %do_it:-126 %do_it%doubt:66 %do_it%leak:97 %do_it%leave_me:126 %do_it%on_way:106
%do_it%place:-86 %do_it%start_again:76 %do_it%thanks:-62 %do_it%wrong_one:-67 %doubt%elsewhere:124
%doubt%leave_me:-59 %doubt%money:67 %doubt%noise:117 %doubt%on_way:103 %doubt%place:-54 %doubt%shift_it:57
%doubt%wrong_one:66 %elsewhere%fails:133 %elsewhere%money:60 %elsewhere%phone:55 %elsewhere%refuse:-108
%elsewhere%smoke_smell:-53 %fails:440 %fails%how_long:88 %fails%leave_me:-110 %fails%message:46 %fails%odometer:52
%fails%on_way:91 %fails%pay_day:92 %fails%phone:134 %fails%place:64 %fails%refuse:103 %fails%shake:-97
%fails%smoke_smell:-93 %fails%staff:74 %fails%start_again:74 %fails%thanks:-87 %fails%who:-105 %fails%wrong_one:208
%family:-55 %family%gone_car:-61 %family%on_way:85 %family%question:66 %family%staff:81 %family%start_again:45
%gone_car:-179 %gone_car%leave_me:45 %gone_car%noise:126 %gone_car%on_way:-50 %gone_car%season:-48
%gone_car%shift_it:-93 %gone_car%start_again:70 %gone_car%wrong_one:-47 %how_long:-67 %how_long%leave_me:66
%how_long%meaning:-55 %how_long%money:-48 %how_long%noise:100 %how_long%place:91 %how_long%question:-68
%how_long%shake:72 %how_long%smoke_smell:49 %how_long%start_again:85 %how_long%wrong_one:-55 %leak:338
%leak%meaning:121 %leak%money:78 %leak%on_way:114 %leak%question:257 %leak%refuse:-164 %leak%shift_it:56
%leak%smoke_smell:-140 %leak%thanks:-108 %leak%wrong_one:-55 %leave_me:-109 %leave_me%message:-47
%leave_me%odometer:-59 %leave_me%phone:79 %leave_me%place:116 %leave_me%smoke_smell:-52 %leave_me%staff:-74
%leave_me%wrong_one:110 %lift:-62 %lift%on_way:76 %lift%place:64 %machine%meaning:56 %machine%noise:46
%machine%shake:65 %machine%wrong_one:46 %meaning%noise:78 %meaning%odometer:-62 %meaning%phone:53 %meaning%refuse:66
%meaning%shake:96 %meaning%smoke_smell:91 %meaning%staff:55 %message:-105 %message%place:-61 %message%question:-66
%message%start_again:-50 %money:-88 %money%noise:280 %money%smoke_smell:115 %money%staff:55 %money%wrong_one:-63
%noise:493 %noise%on_way:155 %noise%phone:117 %noise%place:92 %noise%question:227 %noise%refuse:112 %noise%shake:-200
%noise%shift_it:125 %noise%smoke_smell:-93 %noise%staff:68 %noise%start_again:107 %noise%thanks:-104
%noise%wrong_one:94 %odometer%place:117 %odometer%shift_it:-55 %odometer%staff:62 %odometer%start_again:95
%odometer%thanks:48 %on_way:-65 %on_way%phone:47 %on_way%place:-70 %on_way%question:90 %on_way%shake:71
%on_way%smoke_smell:127 %on_way%staff:76 %on_way%start_again:51 %on_way%wrong_one:54 %opening%phone:-60
%opening%refuse:48 %opening%shift_it:-89 %pay_day:-97 %pay_day%question:49 %pay_day%refuse:54 %phone%place:105
%phone%question:-117 %phone%season:-48 %phone%shift_it:-72 %phone%smoke_smell:187 %phone%who:-64 %phone%wrong_one:76
%place%refuse:120 %place%shake:62 %place%smoke_smell:-100 %question:-79 %question%shake:211 %question%shift_it:47
%question%smoke_smell:154 %question%start_again:-61 %refuse:-84 %refuse%season:-64 %refuse%shake:-98
%refuse%shift_it:95 %refuse%smoke_smell:87 %refuse%staff:46 %refuse%start_again:71 %refuse%wrong_one:46 %season:-91
%shake:477 %shake%shift_it:66 %shift_it%smoke_smell:53 %shift_it%wrong_one:46 %smoke_smell:470 %smoke_smell%staff:49
%smoke_smell%wrong_one:83 %staff:-72 %staff%who:116 %start_again%wrong_one:-76 %thanks:-118 %who:-94 %wrong_one:-101
@?:-153 @car:-93 @confirm_stop:-122 @later:-113 @nothing:45 @offers:-63 @reading:-144 @times:-96 @walk_in:-45 ^_a:-63
^_abren:-47 ^_ahora:-67 ^_airbag:62 ^_all:-67 ^_ando:-69 ^_ay:65 ^_ayer:76 ^_battery:60 ^_both:52 ^_broke:57
^_cada:79 ^_can:-140 ^_cant:60 ^_car:197 ^_check:59 ^_como:-49 ^_coolant:70 ^_could:-101 ^_cranks:47 ^_cuando:-57
^_de:-70 ^_dead:-52 ^_desde:83 ^_did:-75 ^_do:-97 ^_does:-83 ^_donde:-85 ^_dont:-62 ^_el:61 ^_en:-56 ^_engine:58
^_ese:-50 ^_feels:91 ^_filled:65 ^_fire:-105 ^_flat:-75 ^_found:73 ^_frena:-49 ^_gas:48 ^_get:-47 ^_go:-58
^_going:-45 ^_hace:78 ^_hard:-61 ^_hasta:-106 ^_hay:59 ^_hit:-146 ^_how:-206 ^_i:-111 ^_id:-72 ^_if:-88 ^_ill:-45
^_im:-146 ^_is:-309 ^_it:48 ^_jala:-66 ^_jueves:74 ^_just:-82 ^_k:49 ^_key:77 ^_las:70 ^_late:-72 ^_le:120 ^_left:-59
^_lo:-48 ^_lost:132 ^_manana:75 ^_mas:-63 ^_maybe:-61 ^_meh:-84 ^_mi:-62 ^_miercoles:56 ^_my:47 ^_not:-82 ^_oil:47
^_on:-99 ^_one:84 ^_oye:-59 ^_para:-90 ^_pasando:-54 ^_pink:67 ^_por:-72 ^_pull:-90 ^_que:-223 ^_quede:-124
^_quiero:-50 ^_quit:-97 ^_rear:64 ^_running:88 ^_seat:60 ^_shake:-74 ^_should:-45 ^_sold:51 ^_something:-69
^_sounds:-53 ^_start:-178 ^_still:-113 ^_stop:-160 ^_stuck:-83 ^_suena:-74 ^_tell:-52 ^_temp:56 ^_tengo:55 ^_the:77
^_there:119 ^_they:-67 ^_this:-90 ^_tiene:113 ^_tienen:-55 ^_time:-45 ^_tire:61 ^_todo:-75 ^_too:-53 ^_trae:145
^_traffic:-63 ^_traigo:61 ^_truck:65 ^_va:-59 ^_vibra:48 ^_was:61 ^_what:-70 ^_wheel:55 ^_when:-113 ^_which:-86
^_why:-65 ^_wipers:-49 ^_would:-47 ^_yes:81 ^_you:-82 ^_your:-53 a:59 a__and:50 a__battery:50 a__belt:-94 a__book:-52
a__cita:46 a__de:-88 a__derecha:-48 a__for:-84 a__la:-59 a__like:55 a__los:-47 a__no:-86 a__now:-72 a__otra:84
a__out:-61 a__over:52 a__por:55 a__so:75 a__tarde:61 a__that:82 a__under:-82 a__with:97 a_bit:79 a_burning:47
a_como:-142 a_cuanto:-48 a_flat:129 a_gasolina:79 a_jump:82 a_la:55 a_las:-54 a_lot:-81 a_manana:55 a_place:-47
a_red:53 a_una:-61 a_wheel:-45 abajo:122 abajo_$:84 about_to:90 abre:51 abril:45 abs:54 aceite_y:75 aceite_ya:-62
acelerador:67 adelante:-110 adelante_$:-106 ademas:51 adentro:52 after_a:103 after_all:-63 again:63 again_$:-103
agarra:88 agua:165 agua_$:101 aguanta:93 aguanta_$:95 ah:60 ahead:-86 ahi_me:-57 ahora:66 ahora_no:-46 ahora_si:-58
air:91 airbag:108 airbag_light:55 aire:108 al:97 al__y:62 al_cien:-45 al_dar:82 al_frenar:66 al_rato:-49 alarm:-52
algo:110 alguien:56 all:48 all__my:53 all__on:65 all__the:56 all__way:72 all_good:-104 all_over:91 all_the:97
almost:66 already:-62 already_$:-45 also:107 alternator:60 altos:57 altos_$:57 alumbran:98 am_i:-60 amanecio:115
an:-82 and:155 and__doesnt:-54 and__dont:56 and__like:-71 and__no:92 and__on:48 and__to:-45 and_im:69 and_it:106
and_my:89 and_now:128 and_the:140 and_then:64 anda:148 ando:-199 anoche:85 antes_no:46 anticongelante_$:57
anymore_$:-95 anyway:-47 apaga:71 apaga__los:45 apaga_en:48 are:-92 are__again:-145 are__to:80 are_about:65
arreglan:-51 asi__dejo:-46 ask:-134 at:66 at__could:76 at__you:53 at_me:81 at_my:-66 at_stop:60 at_this:-58
at_work:-48 aunque:50 autopista:46 away_$:-71 ay:65 ayer:102 azul_ya:48 bache:85 back_$:-60 back__i:48 back_end:63
back_in:-57 back_when:48 baja:-127 baja_$:63 balatas_$:51 balatas_nuevas:-54 ball:45 banda:-46 bateria_$:-59
bateria_no:75 battery_light:52 be:-110 be__my:-46 be_in:46 be_late:50 be_over:-46 be_there:-46 beater:-80 been:59
been__since:86 below:50 belt_and:-67 bien_$:-68 bien_con:-81 bien_feo:51 bien_las:47 bill_$:55 black:108 blanca_$:-45
blanco:55 blew:64 blinker:111 bolsa:89 bone:66 bonito:-52 book:-66 bota:73 both:81 box_$:65 brake_lights:62
brakes_$:-117 brakes__like:60 brakes_are:57 brakes_dont:58 brakes_feel:45 brand:-74 brand_new:-74 break:-83
break_down:-85 bring:-78 bring_it:-57 bring_the:-53 broke:53 broke_down:74 broke_my:-50 broken:65 bucks_$:53
bumper_$:54 bumps:63 bumps_$:47 burning:88 burning_smell:48 but:142 but__is:75 but__it:46 but_it:112 but_my:47
but_sure:-58 but_the:170 but_there:50 by_itself:82 by_the:89 cada:129 cada_dia:79 cadena:73 calienta:86 call:-52
call_me:73 cambiaron:-55 cambie:-51 cambio:-76 cambio__aceite:-54 cambio_de:-51 cambios:174 came:60 came_back:102
came_off:58 came_on:238 came_up:-92 camina:72 campo_$:54 can:85 can__check:-65 can__come:102 can__get:-53 can__me:82
can__the:91 can_i:-57 can_see:65 cant__in:82 cant__it:53 cant_get:101 cant_see:-48 cant_stop:74 cap:-128 car:53
car__gone:-81 car_wont:49 carga:69 carretera:51 carretera_$:77 carro:54 carro__como:100 carro__lo:-67 carro_anda:53
carro_azul:-51 carro_con:-50 cars:-61 casa:-61 casa_$:67 casi:144 casi__lo:-45 casi_no:137 caso_$:-58 catches:75
catches_$:50 caught:68 caught_fire:68 cel:53 chain:57 change:-62 charco:106 charge_to:46 check__in:-52 check_back:-59
check_engine:87 check_the:-63 chilla:-50 chispas:66 chofer:45 cien:-45 climbing:52 clunk:64 clunking:60 cobraron:62
cochera:53 coffee:53 cold:85 color:-47 come_in:-87 coming_$:-95 coming_out:77 como:112 como__se:68 como_de:82
como_llego:-79 como_que:62 con__de:50 con__frenos:-50 con__ninos:61 con_fierro:107 con_las:-54 con_un:-76
coolant_$:-70 corriente:172 cosa:-48 cost_of:-45 costo:-47 coughs:53 coughs_and:53 crack_of:-46 crank:85 cranks:48
crooked:79 cual:-63 cuando:70 cuando__de:62 cuando__lo:46 cuando__vuelta:48 cuando_doy:73 cuando_llegue:-50
cuando_paso:70 cuando_se:-69 cuanto__saldria:52 cuanto_dura:-47 cuanto_por:55 curb:73 cut:57 da:138 da__el:105
da_miedo:48 dark:48 dash__black:46 dash_went:46 day:-54 days_$:46 de:-51 de_$:73 de__cita:51 de__con:71 de__dos:-45
de__el:50 de__llanta:-134 de__no:100 de__o:-94 de__que:-54 de__se:-56 de_abajo:83 de_aceite:-78 de_adelante:-65
de_frenos:-51 de_gasolina:-49 de_lado:81 de_los:-74 de_que:-55 de_una:56 debajo:62 debajo_del:46 dejo_$:-66
del__esta:63 desde_el:84 dice:88 did:-117 did_it:-57 didnt:65 died:113 died__the:74 digo_que:63 dijo:73 dim:52
dime:-52 dios:91 direccion:-158 direccion_$:-126 direccion__favor:-95 direccion_por:-95 direccion_se:50
direccionales:172 do:-125 do_$:48 do__have:56 do__turn:-56 do_i:-66 do_my:-46 do_that:68 does:-50 does__a:145
does_a:-60 doesnt:96 doing:-49 doing_that:47 dont:65 dont__to:56 dont_even:-45 door:-198 door_$:-107 doors:53
dos__que:61 down:157 down__the:107 down_on:196 doy:62 doy_vuelta:48 dream:-73 drive:111 drive_$:200 drive_it:-53
drive_through:51 drives:-88 drives_like:-47 driveway:48 driveway_$:89 driving_$:54 drops:155 duro:-48 early:-57
echa:65 echa_humo:58 echando:-127 either:-47 el:79 el__a:-82 el__anda:57 el__del:-51 el__en:-75 el__era:-62
el__esta:-48 el__lo:-48 el__no:141 el__nomas:-52 el__pero:53 el__quedo:-73 el__rojo:73 el__se:159 el__va:119 el__y:47
el__ya:-46 el_aceite:-137 el_acelerador:67 el_anticongelante:82 el_carro:67 el_de:-127 el_foco:66 el_freeway:-45
el_freno:143 el_jueves:-64 el_mismo:77 el_mofle:51 el_motor:50 el_pedal:63 el_que:-67 el_trabajo:-59 el_viernes:-53
el_volante:101 ella:65 empezo:105 empezo_a:105 en:74 en__altos:57 en__autopista:73 en__carretera:74 en__cochera:67
en__con:50 en__lado:-55 en__puerta:-94 en__subida:48 en_las:80 en_los:94 en_pie:-65 en_que:-97 en_un:-53 end:112
end_of:-62 engine_$:-68 entiendo:-60 entran:122 entro:-104 entro_$:-72 era:-145 es_$:-101 es__que:62 es_eso:54
es_grave:71 es_que:89 eso:-157 eso_$:-71 eso_es:62 esta:66 esta__agua:47 esta__la:-77 esta__no:-45 esta_baja:-91
estaciono:75 estan_$:-60 estoy__en:61 every:65 every__days:65 every__light:-167 every_morning:74 every_red:-167
ex:-48 exclamation:87 exclamation_mark:64 exhaust:47 far:50 favor_$:-105 favor_y:56 feel_like:-77 feels:165
feels_like:108 fell:54 fell_off:133 fella:-45 feo:81 fierro:73 fierro_$:-50 fierro__fierro:107 fierro_con:107
fila:-56 filled_it:46 fire:-86 fix:87 fixed:-81 flat:79 flat__on:-92 flat__the:103 flat_out:-64 flat_tire:-92
floor:-59 fluid:-82 flush:-50 flying:65 foco_prendido:-76 for:-86 for__appointment:98 for__brakes:-100 for__first:91
for__oil:-60 for__week:52 for_a:91 for_asking:64 for_me:-48 for_my:61 for_the:-68 for_tomorrow:52 forever_$:-61
forever_to:60 forget_it:-47 freeway_$:125 frena:72 frenar:81 freno:121 frenos:-47 frenos_$:-94 frenos_y:76
friday__it:68 friday_is:-46 friend:48 frio:85 frio_$:85 from:81 from__the:95 from_under:92 front_end:85 fue:-56
fuera:49 fuerza:107 fuga:82 fui:-56 fumes:92 furious:45 fyi:45 ganaste:-52 garage:53 gas:-85 gauge:55 gear:118 get:49
get__on:98 get_a:-56 get_back:-48 get_it:117 get_to:-47 go:122 go_ahead:-69 goes:132 going:57 going__be:53
going_to:-140 going_uphill:75 golpe:-68 golpeteo:74 goma:102 gone:-52 good__tomorrow:55 good_for:59 got__flat:96
got_a:51 gotea:75 goteando:51 gps:-63 grab:-82 gracias:-61 gracias_$:-180 gracias__le:46 gracias_ya:47 grave:70
grease:-88 great:-65 great__the:-56 green:78 grinding:63 grinding_$:-69 grua:65 gusto:-49 guy:-87 habia:-77 hace:175
hace__ruido:67 hace_el:-66 hace_ruido:133 hacen:-147 had_to:61 hago:-64 haha:-109 haha_$:-63 hands:59 hanging:62
hard_to:56 has_been:62 hasta:54 hasta_el:50 hasta_que:-120 have__it:77 have__phone:49 have_no:92 have_the:-92
hay_dinero:46 hay_un:-46 headlights:84 hear:85 help_$:-48 help__stuck:77 help_im:77 here:-131 here_$:-66 hill:50
hills:127 hills_$:109 his:-108 history:-62 hit:-83 hit_that:45 hizo:-69 hold:94 holding:-52 hood_$:-93 hood_latch:-49
horn:107 hose:63 how:-88 how__does:54 how__should:49 how__to:63 how_low:-52 how_to:55 hoy:172 hoy__manana:-134
hoy_por:47 huele:71 huele_a:70 hum:63 humito:70 humo:76 humo_azul:53 hurt:-69 i__a:56 i__and:-108 i__be:-110
i__down:47 i__drive:-80 i__it:-88 i__my:46 i__need:49 i__no:78 i__on:84 i__out:-48 i__see:118 i__who:-45 i__you:62
i_came:-67 i_can:52 i_dont:52 i_drive:-68 i_fill:47 i_found:-50 i_get:-47 i_hit:72 i_just:-70 i_lose:-50 i_need:-67
i_paid:-78 i_park:86 i_quit:-64 i_slow:65 i_think:150 i_thought:-48 i_turn:72 i_will:-47 i_wont:-112 ice:-69 id:-125
id__to:-51 id_like:-63 idle:129 if:-60 igual_$:-81 ill:-84 ill__it:-61 ill__you:-46 ill_be:105 ill_let:-63 im__in:50
im__it:52 im__the:-47 im__to:-66 im_down:-59 im_good:103 im_stuck:77 in_$:-75 in__and:51 in__bit:-64 in__car:-55
in__garage:88 in__morning:-69 in__new:83 in_for:-54 in_may:-58 in_park:112 in_second:65 in_the:126 in_time:83
in_traffic:102 into:56 ir__a:-67 is:64 is_$:-103 is__a:87 is__again:45 is__and:-56 is__as:-45 is__got:62 is__hard:50
is__i:-68 is__in:55 is__off:77 is__on:-117 is__one:66 is__out:50 is__something:61 is__still:-45 is__the:-123
is__to:-60 is__when:51 is_cold:56 is_fine:-55 is_fixed:-114 is_going:55 is_gone:-60 is_got:91 is_it:-142
is_leaking:83 is_making:76 is_my:-46 is_not:-71 is_ok:-128 is_on:82 is_own:58 is_shaking:54 is_smoking:57 is_stuck:54
is_that:-100 is_there:-49 it:168 it_$:-143 it__a:-81 it__and:50 it__been:49 it__cold:56 it__fine:-71 it__for:-60
it__good:-58 it__got:91 it__in:-71 it__into:58 it__is:-65 it__leaking:46 it__morning:62 it__off:-45 it__own:58
it__the:-122 it__then:60 it__this:55 it__two:62 it__under:-88 it__when:82 it_a:-62 it_at:-45 it_back:-65 it_died:53
it_does:139 it_doesnt:-77 it_down:-90 it_for:-57 it_home:58 it_i:-48 it_just:66 it_like:-85 it_on:-154 it_over:-107
it_pulls:97 it_shakes:50 it_so:-58 it_starts:-49 it_still:81 it_to:68 it_tomorrow:46 it_up:-85 it_was:-46 it_wont:103
it_you:46 itself:119 itself_$:65 jaja:-69 jaja_$:-70 jala:-97 jala__la:50 jale:63 job:-64 juego:52 jump:49
junkyard:-46 junkyard_$:-45 just__on:64 just_died:94 keep_it:-45 keeps:66 key:72 key_turns:77 knee:-79 knock:-112
knocking:55 know_who:-45 la:48 la__anda:127 la__asi:-46 la__en:45 la__hoy:-117 la__me:47 la__no:110 la__por:-53
la__que:-62 la__roja:61 la__se:95 la__trasera:46 la__y:-140 la_autopista:46 la_cambie:-56 la_carretera:55
la_direccion:68 la_goma:74 la_hora:-48 la_izquierda:71 la_llanta:58 la_loma:57 la_manana:-47 la_otra:-78 la_pila:121
la_puerta:-71 la_rueda:132 la_semana:64 la_subida:48 la_tarde:49 la_verdad:55 la_vuelta:46 lado:117 las:90 las_$:-78
las__el:-54 las_balatas:68 las_luces:71 last:-88 last_night:51 latch:53 latch_$:53 late:-108 late_$:-79 lately:96
lately_$:62 le:78 le__cuando:181 le__la:-54 le__mas:56 le__nada:52 le__un:108 le_hice:57 le_puse:-68 le_sale:133
leak:-53 leak_is:-70 leaking:61 left:-54 left_$:-56 left__the:-49 left_a:-116 left_blinker:111 left_on:-48
left_rear:137 left_the:-60 let__know:-47 let_go:151 let_you:-46 lets_do:62 licencia:-49 light__on:139 light_came:95
light_is:84 lights_$:-128 lights__on:50 like:98 like__in:94 like__on:56 like_a:83 like_new:-94 limp:147
limpiaparabrisas:-88 limping:81 line:111 line_$:64 liquido__frenos:-51 liquido_de:-51 little:68 llanta:77
llanta_$:-55 llanta__atras:48 llanta__una:48 llantas:-76 llantas_$:-89 llego:-78 llego_$:-145 llego_a:49 llegue:56
llevo__lunes:57 llevo_la:-55 lo:-81 lo__en:-67 lo__para:-72 lo_de:-58 lo_deje:57 lo_del:-65 lo_hago:-59 lo_llevo:66
lo_recogi:67 lol:-192 lol_$:-189 loma:57 loma_$:57 long__it:-64 long_does:52 look:-52 look__a:-51 looks:88
looks__a:-58 loose:-70 loose_$:-58 los:58 los__de:-55 los__estan:105 los__no:222 los__para:-47 los__rechinan:-62
los__y:52 los_altos:57 los_cambios:200 los_frenos:53 lose:-57 losing:104 lost:50 lost_all:68 lot:-87 love:-68
low:-101 luces:58 lug:161 lunes__las:-50 lunes_a:-48 lunes_que:61 luz_roja:61 mad:59 made:50 make:-99 make__today:-80
make_it:-54 makes:59 makes_the:50 making:48 making_a:70 malos:80 marcha:173 mark:64 martes__el:-62 mas_adelante:-91
may:-98 may_$:-72 maybe_in:-70 me:-54 me_$:49 me__el:-111 me__la:-102 me__los:111 me__mi:53 me__para:-45 me__que:87
me__time:-45 me__un:-53 me_and:-64 me_cobraron:62 me_da:-90 me_dejaron:-136 me_dejo:104 me_esta:72 me_every:-47
me_first:53 me_i:-52 me_it:53 me_lleve:63 me_poncho:54 me_quede:165 me_saldria:52 me_tuvieron:82 me_up:-53 me_va:47
mean_on:-57 mechanic:72 meh:-84 mejor:-118 metal:104 metal_$:66 mi:-113 mi__con:65 mi__de:-61 mi_carro:118 mi_ex:-48
miedo:56 miercoles_por:64 mil:-110 mil_y:-73 millas_$:61 min:-149 min_$:-78 minivan:-62 minutes_$:-55 miss:-59
missing:60 modo:46 mofle:51 more:-83 morning:46 morning_$:50 morning__i:59 morning_so:-53 mornings:128 motor_$:132
mph:131 much__look:52 much_to:55 muy:-81 muy_bien:-55 muy_contento:-80 my:-112 my__car:-83 my__has:-68 my__in:-56
my__the:90 my__wont:81 my_appointment:83 my_brakes:136 my_driveway:131 my_garage:82 my_kid:-59 my_mechanic:123
my_other:-53 my_own:-48 my_street:72 my_tire:49 my_tires:54 nada:-52 nearly:94 need:-62 need_to:-87 needle:79
negro:53 neighbor:73 neighbor__it:53 new:-157 new_$:-64 new__on:-60 new_battery:-119 new_tires:49 new_year:77
next:-90 next_week:-110 ni:-89 ni__ni:-71 ni__no:57 ni_la:59 ni_modo:46 ni_nada:-113 ni_un:-66 ningun:-105
ningun__prendido:-76 ningun_foco:-76 ninguna:-56 ninos_$:58 no_$:-195 no__all:-74 no__at:-57 no__bien:214
no__carro:-55 no__da:67 no__en:108 no__eso:-46 no__hoy:45 no__lights:-119 no__lo:74 no__los:126 no__nada:-96
no__ni:-66 no__ningun:-81 no__ninguna:-58 no__no:-191 no__nomas:82 no__on:-59 no__que:-47 no__si:74 no__you:49
no_agarra:77 no_and:-87 no_el:-53 no_entiendo:-59 no_frena:126 no_it:63 no_jala:-82 no_la:-51 no_le:-54 no_leaks:-56
no_lights:-85 no_llego:58 no_me:80 no_more:-74 no_noise:-146 no_nomas:62 no_one:-51 no_para:227 no_pero:-46
no_prende:127 no_quiere:126 no_quiso:53 no_sale:-59 no_se:-113 no_smoke:-74 no_thanks:69 no_trae:-153 no_traigo:-57
no_voy:54 no_worries:-63 no_y:-51 no_you:-82 noise_$:100 noise__all:-88 noise_at:-86 noise_is:57 nomas_el:-111
nomas_que:65 none_of:58 noon:-53 normal:78 nose:86 not__a:53 not_a:-87 not_at:54 not_going:-95 nothing:122 now_$:-55
now_i:-89 now_it:85 nuevas:-94 nut:145 o:-147 o__de:-95 o_que:56 of__all:63 of__driveway:-67 of_a:117 of_it:-70
of_me:-48 of_my:47 of_the:46 off__the:88 off_and:-45 off_at:47 off_the:51 oil:-97 oil__came:59 oil__on:54
oil_cap:-115 oil_light:63 oil_pressure:52 oily:90 ok_$:-92 ok__do:53 ok__it:-48 ok__the:58 ok_but:45 ok_is:-48
ok_paso:57 on:182 on__back:59 on__freeway:91 on__th:-82 on__twice:45 on_a:-75 on_for:55 on_friday:-50 on_hills:92
on_last:60 on_me:69 on_my:-178 on_that:-47 on_your:-50 once:-88 one:65 one_$:-106 one__the:95 one_of:85 one_side:45
one_that:86 open:74 or:-193 or_anything:-51 other_car:-55 otra__el:88 otra_vez:73 otro:-51 out__back:60 out__im:50
out__me:85 out_and:50 out_front:-64 out_on:79 out_the:76 over:76 over_$:-49 over_bumps:47 over_my:54 overnight:50
overnight_$:56 oye:124 oye_un:63 paint:73 paper:-47 para__la:58 para__lado:99 para__se:55 para_la:110 para_que:-66
para_un:58 para_una:-62 parada:64 park:147 park_$:134 parking_$:-64 paro:96 pasando:-55 pasar:79 paso:60 paso_$:-72
paso_de:70 pass:-90 patina:66 pedal:120 people:45 pero:72 pero__no:49 pero__se:-56 pero_de:-49 pero_el:-50 pero_la:56
pero_le:95 pero_no:-73 pero_si:-78 phone:-85 phone_me:54 pie_$:-61 pierde:96 pila:121 pink:48 plan:-57 please_$:-57
podria_ser:52 poking:89 poncho:47 poncho__llanta:54 poner:-64 pop:-74 popped:119 popping:-67 por__me:50 por__se:-90
por__y:86 porq:53 porque:65 porque__me:53 power:203 precio:-59 premio:-52 prende:175 prendida:-58 prendida_$:-58
prendio:106 press:51 pressure:52 pretty:75 price:-49 primo:45 puddle:53 puede__alguien:49 puedo:92 puedo_$:-57
puedo__asi:65 puedo__el:-55 puedo_ver:59 puente_$:56 puerta:-90 puerta_$:-48 pull:-145 pulled:-61 pulls:145 pump:155
purrs:-72 puse:-91 put:-120 put_it:-54 putting:-57 que:120 que__cuando:45 que__el:-60 que__las:67 que__para:84
que__puedo:48 que_ahora:95 que_direccion:-90 que_la:60 que_le:-59 que_ni:48 que_no:-57 que_pasa:-50 que_paso:73
que_tan:-53 que_viene:-81 que_ya:54 queda:46 queda_pegado:45 quede_muy:-69 quede_sin:50 quedo:-178 quedo_$:-73
quedo__en:98 quedo__la:47 quedo_como:-55 quedo_en:53 quedo_mi:-63 quiere:134 quiet:-77 quiso:53 quit:-94 quit__the:45
quit_on:59 quit_smoking:-111 quita:89 quita_$:89 radiador:53 radiator:-46 rain:85 ramp:60 rapido:70 rapido_$:-94
raro:63 rato:-47 recogi:67 red:-58 red_$:-52 red_light:-166 red_oil:50 reminders:-60 reminders_$:-50 replaced:-53
replaced_the:-55 report:-61 restart:57 revento:64 reversa:58 reversa_$:46 reverse:108 reverse_$:57 right:-149
right_now:-74 road_$:53 rock:90 roja:76 rojo:155 roof:-55 rotors:-67 rough:69 round:-55 rueda:52 ruido:125
ruidos:-160 run:-53 running:45 running_behind:-52 saben:-61 safe__drive:-48 said:-65 saldria:58 saldria_$:77 sale:153
sale_$:-88 sale_un:49 saliendo_del:-54 saque:-53 says:78 se:294 se__como:57 se__con:-108 se__eso:-46 se__esta:73
se__hasta:46 se__hicieron:-49 se__la:-65 se__llevo:-104 se__mas:-57 se__no:67 se__pegado:45 se__poncho:54
se__quedo:54 se__sale:88 se__sola:73 se__solo:85 se__un:82 se__va:57 se_apaga:70 se_apago:53 se_calienta:51
se_hace:-94 se_hizo:-57 se_la:-80 se_las:-108 se_le:74 se_les:-45 se_lo:-142 se_los:-61 se_me:203 se_oye:193
se_puede:-51 se_puso:91 se_que:81 se_queda:54 se_quedo:122 se_quita:89 se_si:73 seat:78 seat_belt:60 seats:-69
second:56 second_$:-83 second_gear:116 second_one:-75 see:93 see__then:47 see_the:55 seen:-75 semana_el:59
semanas:-45 semanas_$:-45 sending:-64 sera:51 set:-58 shake:-124 shake__it:-74 shake_on:-74 shakes:82 shakes_at:81
she:63 shes:64 shes_at:-46 shift:-75 shifts:149 shimmies:101 shop:-68 should:-77 should_i:-59 shoulder:91
shoulder_$:81 shredded:47 shudders:81 shut:93 si_$:-45 si__el:45 si__llevo:47 si__lo:-65 si__no:-63 si_no:-72
si_que:57 si_quiero:-49 si_ya:-58 sign:-64 sigue:120 sigue__pie:-63 sigue_en:-63 sigue_igual:-91 sin:115
sin_frenos:49 sin_luces:51 since:51 since__hit:45 since_i:58 since_the:-61 sirven:54 sit:47 sit_in:62 sits:-64
sitting__the:75 sleep:-51 slides:91 smell:75 smells:47 smoking:-120 so__are:-55 so__can:-48 so__cant:101 so__me:51
so_im:113 sola:81 solito:46 solo:93 solo_$:61 somebody__me:84 something__up:-69 something_came:-69 something_that:-87
somewhere:48 sooner:79 sooner_than:55 sorry:-53 sound:113 sounds:-114 sounds__a:-83 soy:-46 sparks:78 speed:97
spot:-84 squeak:84 squeaking:-128 squeaks:-105 squealing:67 squishy:57 stalled:63 start:-68 start_$:-110 started:72
starts:-152 state:-52 steam:80 steering:106 steering_is:45 steering_wheel:-66 step:117 stick:48 still:86
still_have:-52 still_on:-116 stop:140 stop__time:83 stop_in:57 stop_with:-49 stopped__the:-47 stops:60 stuck:-48
stuck__traffic:-126 stuck_in:-49 stuck_on:117 su:-81 sube:101 subida:49 suelto:-54 suena_bien:-186 sure:-45
surgery:-51 swapped:-71 swapped_the:-65 symbol:53 tail:137 tailpipe:57 takes_$:-48 takes__to:68 tal:-47 tambien:69
tan:-57 tarde__se:56 temp:79 temp__is:51 ten_minutes:55 tengo:62 termometro:60 th:-55 th_at:-50 than_the:-55
thanks_$:-56 that__me:51 that__the:-161 that_a:-46 that_it:72 the__after:-45 the__and:-56 the__are:45 the__box:47
the__but:59 the__by:-45 the__came:56 the__do:54 the__does:-46 the__doesnt:122 the__fluid:46 the__from:-67
the__front:123 the__has:-58 the__it:78 the__light:76 the__lights:94 the__line:88 the__lol:-49 the__on:-77
the__still:-48 the__that:93 the__then:-64 the__thing:-69 the__this:72 the__through:51 the__tower:-88 the__was:-50
the__went:203 the__where:-51 the__year:83 the__you:-82 the_back:194 the_battery:-55 the_belt:-104 the_brakes:-97
the_corner:-45 the_door:-122 the_drive:75 the_driveway:-78 the_engine:-70 the_fire:-82 the_first:84 the_freeway:91
the_gas:65 the_hood:-55 the_hour:-76 the_junkyard:-45 the_left:68 the_light:-70 the_morning:-82 the_new:144
the_noise:134 the_old:-70 the_one:47 the_pads:45 the_right:99 the_road:-91 the_second:-58 the_shoulder:129
the_smoke:-59 the_steering:94 the_stop:89 the_street:-46 the_th:-50 the_thing:55 the_time:74 the_tire:-49
the_tires:-82 the_truck:71 the_trunk:-46 the_visit:-56 the_way:68 the_wheel:56 the_wheels:-51 the_whole:52
the_wiper:-73 them:-49 then_$:-72 then_it:64 there:91 there_$:-64 there__a:187 there_is:168 these:-68 they:-89
they__the:-66 they_replaced:-66 thing:69 thing__is:-61 things:-97 think:55 think_$:110 think_it:-48 this__it:45
this_morning:115 this_week:104 those:-63 thought:-61 three:62 thursday_$:-73 thursday__it:94 thursday__work:-67
thursday_and:63 tiene__y:72 tiene_que:-62 tienen:-100 till_i:-49 time_i:52 time_is:60 times_$:-96 tirada:107 tire:133
tire_$:63 tire__out:49 tire_blew:75 tire_on:-74 tires:-95 to_$:-97 to__a:65 to__about:66 to__and:-60 to__in:-55
to__my:-62 to__off:55 to__right:54 to__that:64 to_be:45 to_bring:-47 to_call:-66 to_do:57 to_drive:-74 to_fix:131
to_get:73 to_it:62 to_let:60 to_look:50 to_me:-59 to_need:-51 to_pump:85 to_start:102 to_stop:53 to_you:47 toda:60
today:47 today_instead:52 todo__con:-81 todo_bien:-98 todo_el:103 told:62 tomorrow:57 tomorrow__is:72 tomorrow_it:115
too_$:87 too__to:-48 took__to:90 tosiendo:77 toward:52 toward_the:61 tower:-88 trabajo:-124 trabajo_$:-45
trabajo_no:-48 trae:118 trae__la:141 trae__luz:-57 trae_un:131 traffic_$:52 traffic_is:-63 traia:-47 trail:84
trail_of:84 trasera:46 tren:-56 truck_is:67 trunk:-46 turn:80 turned_the:74 turns:125 tuvieron:82 twice:77 two:144
two_$:81 two__ago:-45 two_days:75 un:115 un__al:45 un__y:55 un_carro:-67 un_golpeteo:58 un_lado:97 un_poquito:-53
un_premio:-52 un_ruido:91 una:100 una__y:-57 una_fuga:61 una_llanta:106 una_luz:69 under:106 under_me:110
under_the:56 up:69 up__a:54 up__i:71 up__the:-63 up_a:51 up_at:-49 uphill:75 us:-64 used:77 va:119 va__lado:56
va_a:-65 va_de:58 van:82 vapor:75 veces:76 veces_que:51 velocidad:58 velocidad_$:58 venden:-47 vendi_pero:47
vendimos:-52 vengo:-48 veo:-66 ver:134 verdad_$:-64 vez_$:-57 vez_el:83 vibra:69 vibrates:61 viene_$:-47 visit:-50
visit_$:-50 volando:-64 volante:101 voy:-60 voy__que:-63 vuelta_$:106 wait_for:52 want:-48 warning:-151 was:-116
was__again:46 was__but:50 was__on:-64 was_a:62 was_in:-77 was_it:52 washer:-87 way:54 way_down:62 we:-92 week_$:-49
well:-46 went:99 went__in:52 went__on:72 went__the:-81 went_away:162 went_black:46 went_out:51 went_to:-67 were:-88
wet:55 what:-67 what__it:83 what__that:72 what__the:-52 what__you:58 what_do:103 what_does:-79 what_would:78
wheel:123 wheel_$:-69 wheel_looks:66 wheels:-61 when:64 when__is:66 when__turn:77 when_i:245 when_the:-71 when_you:46
where_i:94 where_is:-57 which:-108 whining:52 whoever:-47 whole:62 whole_car:55 whole_dash:63 why__you:-51
why_are:-53 why_does:-45 will_not:62 wiper:-122 wipers_squeak:-57 wires:98 with_an:45 with_it:-60 with_the:-88
wobbles:61 wont__it:-139 wont__there:-74 wont_be:-215 wont_crank:54 wont_go:81 wont_make:-121 wont_start:115
wont_work:-55 work:-93 works:67 works_but:60 worse:55 worse_than:45 y:138 y__bien:-53 y__lo:-70 y__los:55 y__me:-82
y__no:111 y__quedo:-45 y_ahora:46 y_casi:50 y_de:56 y_el:-111 y_es:55 y_ese:46 y_las:128 y_lo:91 y_me:-71 y_nada:58
y_no:67 y_se:-59 y_ya:180 ya__en:50 ya__frena:109 ya__hicieron:46 ya__las:-85 ya__llego:78 ya__no:57 ya__que:56
ya__tiene:72 ya_casi:61 ya_le:-49 ya_lo:-47 ya_ni:111 ya_quedo:-47 ya_se:53 ya_van:66 ya_voy:-46 yeah_$:-46 years:-45
yes:-84 yes_$:-125 yes__works:82 yes_monday:46 yes_please:45 yes_still:48 yes_the:-65 yo__se:-45 yo_mismo:-49
yo_no:125 you:-114 you__a:-102 you__it:-48 you__that:66 you__to:48 you_check:-65 you_left:-146 you_see:46 you_tell:54
your:-98 zumbido:46
"""
