"""What speaks for and against `decline`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "decline"
BIAS = -128
WEIGHTS = """\
#aban:-60 #aben:87 #aber:-78 #abla:-56 #abou:69 #abri:-74 #acei:59 #acer:50 #acha:64 #acie:53 #acom:46 #actu:55
#adas:54 #ador:59 #agal:-57 #agan:-57 #agar:-86 #agua:-110 #ague:-60 #ahor:-112 #aigo:-81 #aile:89 #ains:83 #aint:62
#ajar:48 #aken:-54 #akes:63 #aler:46 #algu:70 #alig:54 #alke:105 #allo:92 #alls:145 #alon:92 #alqu:-60 #also:69
#alta:-53 #alve:-47 #amab:-75 #amed:-121 #amen:54 #amor:56 #amos:100 #anag:72 #anan:-112 #anca:-52 #anch:57 #anes:50
#angi:-46 #anic:52 #anks:-46 #anoc:-60 #answ:93 #anta:-96 #ante:-71 #anyw:77 #anza:73 #apen:52 #aqui:-156 #arag:58
#arat:55 #arca:-53 #arch:-95 #ardl:55 #ardo:63 #ared:-59 #arel:58 #arga:81 #arlo:66 #arme:46 #arou:58 #arqu:-59
#arra:-117 #arre:-60 #asad:79 #ashe:47 #asia:76 #aske:-56 #asnt:-51 #asse:-71 #aste:210 #asun:-51 #ated:-80 #atel:87
#ater:79 #ativ:110 #atte:-46 #auge:-72 #aule:-48 #ayar:47 #ayer:-99 #baby:-71 #band:-47 #bara:55 #bare:58 #beat:68
#beer:122 #befo:-62 #biam:-46 #bien:71 #bila:62 #bios:-93 #blan:-99 #blen:-55 #bles:-58 #borr:-58 #bout:69 #bran:-61
#brea:-57 #brit:62 #bsup:-109 #buck:57 #buji:-48 #busy:-85 #bvio:-55 #cach:53 #caen:86 #call:-90 #came:-57 #cand:-116
#cant:110 #carc:53 #card:81 #care:62 #carg:47 #caro:144 #carr:90 #cars:103 #casa:49 #caso:46 #catc:-49 #ccio:-68
#ceit:59 #cela:-91 #cent:46 #cesa:58 #chan:123 #char:-66 #ched:53 #chem:61 #ches:55 #chil:71 #choi:-68 #choq:-67
#chor:59 #chur:56 #cibi:-134 #cide:56 #cidi:63 #cido:89 #cien:64 #cirl:49 #cita:120 #cked:71 #clas:101 #clie:-62
#clin:105 #coch:49 #comp:65 #cond:-47 #cons:50 #cont:-100 #conv:76 #coun:60 #cove:64 #cran:-63 #crat:65 #creo:91
#crib:-58 #cros:80 #ctua:56 #cual:-130 #culp:54 #cupa:-50 #cupe:87 #curi:128 #cust:-54 #cycl:-79 #dale:-61 #dand:71
#dawn:62 #days:124 #deal:56 #debo:65 #deci:105 #decl:77 #deep:-53 #deja:140 #deje:97 #dejo:71 #delo:103 #dema:116
#denm:49 #dent:-76 #dese:113 #desk:52 #desp:-46 #dial:154 #dias:60 #dido:64 #diga:-56 #digo:-46 #dime:70 #dine:62
#ding:122 #dire:-60 #dist:-62 #dito:-77 #dled:-75 #dles:88 #dobl:77 #does:98 #dogs:105 #doin:66 #dont:83 #door:-89
#doub:-432 #down:159 #dude:-164 #duro:-48 #eale:46 #eard:-50 #ease:81 #eate:63 #eath:-46 #eave:120 #ecal:98 #ecar:-50
#ecci:-59 #echo:64 #ecib:-137 #ecid:135 #ecio:47 #econ:-46 #ecti:-47 #edal:-59 #eeks:52 #eepi:118 #efer:-76 #efie:85
#efor:-62 #egat:151 #egle:-58 #eglo:73 #egoc:59 #egue:-53 #eite:59 #ejal:132 #ejel:52 #ejen:96 #ejor:70 #ejos:151
#elad:-49 #elin:60 #elli:167 #ello:88 #else:76 #elvo:55 #eman:-54 #emas:116 #emen:58 #emin:71 #emos:-88 #empr:99
#enan:-50 #enca:75 #ench:116 #ende:-90 #endi:-48 #enen:114 #enin:48 #enlo:141 #enme:-83 #enos:107 #enou:59 #ense:74
#ente:-82 #ento:-86 #ents:-54 #eocu:79 #eone:62 #eopl:-50 #ephe:57 #epin:118 #erar:57 #erch:63 #erdo:-47 #ered:82
#eren:-103 #eres:158 #erin:-60 #erio:-102 #erma:48 #erme:57 #erra:147 #erro:55 #erso:-46 #erta:50 #ervi:68 #erwa:56
#eryw:61 #esar:57 #esas:115 #escr:-68 #eseo:65 #esim:-49 #esnt:140 #esol:-46 #esos:127 #este:-221 #ettl:-56 #ewhe:90
#exac:-57 #exis:-57 #expl:-53 #exte:-80 #extr:60 #eyre:51 #ezca:63 #falt:-54 #fech:47 #fere:-96 #feri:-132 #ffor:49
#fije:80 #filt:90 #fine:80 #firm:-70 #firs:-64 #five:-48 #fixe:-59 #flic:73 #flor:-49 #flus:109 #folk:49 #fort:106
#foun:112 #fren:-64 #frie:-93 #full:77 #fuse:-47 #gall:130 #galo:49 #game:-63 #gano:66 #gara:71 #garr:-87 #gast:56
#gati:151 #gaug:-72 #gave:57 #ghed:58 #ghts:-47 #girl:77 #give:51 #givi:98 #gnme:54 #goci:59 #good:78 #grab:-87
#grea:48 #guan:-99 #guar:52 #guna:54 #guno:75 #habl:-52 #hace:-51 #haga:70 #hago:67 #hanc:108 #hand:49 #hard:97
#hear:-84 #heat:-103 #heca:-50 #heck:76 #hemo:62 #hera:49 #heyr:51 #hile:-61 #hist:96 #hoic:-53 #hole:49 #holl:-47
#hone:-51 #hoqu:-67 #hori:-107 #horn:-50 #horr:123 #hose:94 #houg:82 #hour:79 #hout:68 #hree:127 #hrou:-51 #humb:155
#hurc:56 #iaje:-73 #iamo:-46 #iban:-76 #ibir:-130 #ible:58 #ibra:-57 #ices:50 #icio:-62 #idad:111 #idea:-97 #ided:127
#idel:121 #ides:-54 #idit:-66 #idos:-65 #iend:-91 #iera:67 #iere:85 #ierr:90 #iert:64 #igan:68 #ignm:54 #ijer:-46
#iled:60 #ilte:56 #imer:-54 #imes:54 #imon:-65 #impo:90 #incl:69 #ings:55 #ingu:88 #insi:83 #inst:104 #into:57
#invi:120 #ione:-73 #iosi:110 #ious:-56 #iper:58 #irec:-60 #irin:62 #irst:-64 #ises:70 #isio:-47 #isit:-75 #ismo:71
#isos:48 #iste:85 #isti:84 #itar:95 #itho:71 #itti:-51 #ivin:92 #ixed:-59 #jaja:56 #jalo:69 #jand:79 #jaro:129
#jelo:52 #jenl:120 #jero:-46 #jias:-48 #jubi:62 #just:59 #keep:137 #laci:66 #lado:50 #lanc:-66 #land:-69 #lare:-70
#laro:-73 #lash:50 #late:-70 #ldnt:-92 #leas:142 #leav:140 #leep:62 #lega:62 #lejo:138 #lema:-75 #lemo:51 #lers:51
#less:81 #lets:65 #leve:-73 #levo:82 #lgun:47 #lien:-70 #lign:54 #lina:85 #line:58 #ling:53 #live:148 #lked:124
#llam:-61 #llan:96 #llen:-47 #ller:-47 #llet:68 #llin:142 #llos:61 #loco:187 #long:-96 #look:-68 #lost:-48 #lqui:-60
#ltas:78 #lter:52 #lush:109 #lver:57 #lvid:85 #lyin:92 #maam:83 #mabl:-75 #made:-56 #mail:78 #mana:-48 #mano:65
#many:-67 #marc:-205 #marm:66 #marq:-50 #mart:-59 #masi:76 #mate:-49 #mati:-51 #matt:-96 #mber:-61 #mbsu:-109
#mean:78 #mejo:70 #ment:-56 #meon:62 #mera:93 #mero:-158 #meti:50 #mewh:46 #mily:-47 #mina:-62 #mind:50 #mine:71
#mini:-71 #mism:55 #mmen:49 #moda:46 #mome:-196 #mond:-55 #more:-151 #morn:-72 #moto:-52 #mpan:72 #mpli:57 #mpos:134
#much:-73 #muer:123 #myse:80 #nada:64 #nage:72 #name:-167 #nana:226 #nate:67 #ncar:50 #nces:84 #nche:108 #ndan:74
#ndar:-57 #ndid:47 #ndin:116 #nece:75 #need:-80 #nega:119 #nego:59 #neit:151 #nene:72 #nest:-80 #nfia:110 #nfor:99
#ngin:-66 #ngun:88 #nice:65 #nimo:-97 #ning:160 #nles:66 #nlos:140 #nmen:54 #noma:50 #nomb:192 #none:360 #noon:-48
#noug:59 #nozc:-125 #nswe:93 #ntac:-62 #ntal:-66 #ntar:-88 #ntas:51 #ntem:-69 #nter:80 #ntes:-80 #nume:-49 #nvie:92
#nywa:112 #oats:47 #obra:67 #obvi:-55 #ocar:-81 #ocid:60 #ocup:82 #odas:69 #oday:-59 #odos:59 #oesn:140 #oice:-85
#oing:107 #oken:52 #olan:-48 #olks:49 #olle:-77 #olve:55 #olvi:55 #omas:62 #ombe:169 #omen:-215 #omeo:62 #omer:-81
#omes:-56 #omew:46 #omme:49 #omod:46 #ompa:48 #onan:79 #ones:104 #onfi:-55 #onga:-68 #only:109 #onoc:90 #onoz:-125
#onta:-87 #onto:-48 #ools:149 #oors:-66 #opin:51 #ople:-50 #oque:-81 #oqui:-52 #orit:-120 #orme:-47 #orqu:-49
#orri:-60 #orry:99 #orta:52 #orte:-61 #orth:132 #oser:46 #osib:79 #osid:62 #othi:54 #oton:-76 #otor:-52 #ound:97
#oung:62 #ount:58 #ours:60 #oved:51 #ozco:-125 #pago:-48 #pany:56 #park:-56 #part:-98 #pasa:-89 #pass:180 #payi:57
#peda:-59 #pedi:-76 #pena:123 #pend:71 #peni:49 #pens:65 #peop:-50 #pere:46 #pero:121 #perr:71 #pesi:-49 #ping:48
#plea:-103 #poco:57 #poin:48 #poke:116 #poqu:-52 #posi:71 #post:-60 #pped:-71 #ppen:49 #ppin:-62 #prec:56 #pren:-76
#preo:79 #pres:-134 #prev:48 #prob:-63 #pron:-48 #prop:54 #pull:-65 #pura:82 #puro:97 #push:63 #putt:110 #quea:96
#quie:-79 #quit:117 #rack:90 #raer:48 #rage:58 #raig:-80 #ranc:-50 #rand:-59 #rani:54 #rank:-68 #rant:51 #rara:73
#ratc:65 #rath:53 #rato:89 #raya:47 #rcac:53 #rcan:-106 #rdan:-50 #rdar:93 #rdly:60 #reac:-55 #reak:-65 #reca:90
#recc:-60 #rece:-62 #reci:-68 #reco:54 #rect:-46 #redo:-59 #reen:-46 #refe:-76 #refi:85 #rego:46 #rely:58 #rend:-76
#reoc:79 #repl:-47 #resa:-99 #reso:-46 #riba:-50 #rico:55 #rien:-101 #ries:-74 #righ:72 #rime:-54 #rimo:68 #rios:90
#rita:-61 #rite:-47 #rito:136 #rman:48 #robl:-100 #roll:-72 #rong:-64 #ront:-65 #ropi:84 #ross:80 #roug:-82 #roun:54
#rque:-99 #rrec:-46 #rrie:-128 #rrit:68 #rson:-46 #rtan:62 #ruen:56 #ruid:-51 #runs:66 #rywh:61 #sabe:72 #sado:46
#sail:60 #sali:-104 #scra:57 #scri:-50 #scul:54 #seat:-48 #seco:-47 #seen:-47 #sela:48 #self:133 #sell:122 #sema:-54
#serv:62 #shes:55 #ship:57 #shop:-67 #show:-52 #siad:76 #sibl:69 #sida:93 #siem:58 #sien:100 #siga:117 #sign:-52
#sima:-56 #sist:51 #sits:86 #sitt:-50 #sity:47 #sked:-56 #skip:113 #slee:62 #sobr:62 #sold:-175 #solo:96 #some:64
#sorr:58 #spen:127 #spok:161 #sque:88 #ssed:-106 #ssio:58 #stab:-54 #stam:120 #star:-53 #stay:109 #stol:-57 #stom:-54
#stop:-114 #stoy:109 #stre:82 #stri:67 #stuf:97 #sund:56 #swer:93 #taba:-80 #taci:65 #tall:-46 #tamo:134 #tand:-74
#tard:61 #tarl:72 #tarm:67 #taro:58 #tati:53 #tche:55 #teac:87 #tely:64 #teme:-69 #tenc:46 #teni:-51 #tent:-46
#tere:95 #teri:56 #ters:-66 #tery:73 #text:-146 #tful:65 #ther:48 #thos:67 #thou:117 #thre:102 #thro:-51 #thum:148
#tien:-56 #tier:178 #till:-58 #ting:60 #tira:-59 #tire:112 #tive:70 #toda:-65 #told:-66 #tole:-57 #tome:-53 #tono:-76
#took:-59 #tops:63 #town:-76 #trac:84 #trai:-52 #tree:52 #tres:115 #true:56 #trun:62 #trus:-49 #tter:-108 #ttle:-46
#tues:-101 #tuff:97 #turb:-69 #turn:-81 #type:-51 #ualq:-60 #uant:-80 #uard:52 #ubic:-55 #ubie:62 #ubil:62 #uchi:-56
#ueak:119 #ueda:51 #uedo:-58 #uelv:59 #uena:-64 #uene:66 #uera:111 #uere:90 #uesd:-72 #ueva:-71 #uidi:-63 #uits:52
#ujia:-48 #uldn:-92 #ulli:-47 #umbe:-50 #umbs:155 #umer:-49 #unci:-56 #unfo:87 #unle:66 #unta:-48 #uras:76 #urch:50
#urio:120 #ushy:48 #usin:75 #usta:50 #usto:-133 #utti:83 #varl:51 #venc:77 #verc:63 #vere:48 #vers:-99 #viaj:-91
#vibr:-57 #vido:115 #vier:92 #ving:94 #visa:58 #visi:-123 #vive:-52 #vuel:87 #walk:56 #wall:62 #want:-46 #wapp:-70
#were:145 #wers:57 #when:74 #wher:81 #whil:-61 #wipe:89 #wond:-48 #wont:69 #worr:-78 #wort:149 #wren:116 #wron:-64
#xact:-57 #xist:-57 #xpli:-76 #xtee:-63 #xtra:60 #yaro:47 #ycle:-78 #yeah:-60 #year:84 #ying:106 #youn:62 #your:56
#ysel:80 #yway:112 #zero:145 %again_later:-203 %again_later%agree:-81 %again_later%away:-137 %again_later%bring:-73
%again_later%busy:-156 %again_later%car:82 %again_later%doubt:56 %again_later%family:88 %again_later%how_long:66
%again_later%money:-71 %again_later%noise:-61 %again_later%odometer:119 %again_later%on_way:128
%again_later%pay_day:-107 %again_later%phone:70 %again_later%place:-55 %again_later%refuse:90
%again_later%season:-104 %again_later%shift_it:103 %again_later%start_again:93 %again_later%thanks:95
%again_later%wrong_one:72 %agree:-52 %agree%away:96 %agree%bad:-51 %agree%bring:-142 %agree%call_off:98
%agree%car:137 %agree%car_part:171 %agree%doubt:-126 %agree%elsewhere:-60 %agree%family:68 %agree%how_long:-219
%agree%lift:-74 %agree%meaning:118 %agree%message:147 %agree%money:-90 %agree%opening:49 %agree%question:125
%agree%refuse:-123 %agree%season:-92 %agree%shake:-46 %agree%staff:79 %agree%start_again:-79 %agree%thanks:138
%agree%wrong_one:140 %away%bring:-70 %away%busy:-55 %away%do_it:127 %away%fails:55 %away%how_long:-78
%away%leave_me:-69 %away%lift:-59 %away%meaning:60 %away%message:63 %away%money:107 %away%odometer:-61
%away%pay_day:-55 %away%phone:-100 %away%place:53 %away%refuse:117 %away%season:46 %away%staff:104 %away%thanks:136
%bad:-53 %bad%call_off:135 %bad%car_part:70 %bad%doubt:124 %bad%elsewhere:-58 %bad%fails:-55 %bad%meaning:49
%bad%refuse:62 %bad%staff:-61 %bad%start_again:64 %bring%doubt:-138 %bring%elsewhere:75 %bring%fails:-86
%bring%family:-53 %bring%gone_car:81 %bring%leak:113 %bring%meaning:78 %bring%money:82 %bring%pay_day:92
%bring%place:47 %bring%question:119 %bring%refuse:49 %bring%shift_it:-76 %bring%who:70 %busy:82 %busy%car:47
%busy%doubt:-58 %busy%message:55 %busy%odometer:58 %busy%phone:76 %busy%question:-62 %busy%staff:-71 %busy%thanks:59
%call_off%car:62 %call_off%doubt:104 %call_off%elsewhere:-73 %call_off%fails:-98 %call_off%how_long:-46
%call_off%leak:72 %call_off%lift:139 %call_off%meaning:94 %call_off%money:-90 %call_off%odometer:55
%call_off%opening:127 %call_off%phone:67 %call_off%question:150 %call_off%season:-81 %call_off%start_again:81
%call_off%thanks:233 %call_off%wrong_one:202 %car%car_part:-81 %car%do_it:67 %car%gone_car:-128 %car%meaning:-51
%car%noise:64 %car%odometer:-53 %car%refuse:-141 %car%season:106 %car%shake:57 %car%wrong_one:-131 %car_part:-77
%car_part%doubt:-100 %car_part%elsewhere:-86 %car_part%fails:-147 %car_part%family:60 %car_part%gone_car:-104
%car_part%how_long:-131 %car_part%leave_me:216 %car_part%lift:-61 %car_part%meaning:-92 %car_part%message:543
%car_part%money:-91 %car_part%opening:-68 %car_part%phone:-84 %car_part%place:-112 %car_part%refuse:142
%car_part%smoke_smell:-119 %car_part%start_again:66 %car_part%thanks:72 %do_it%elsewhere:-156 %do_it%fails:66
%do_it%family:-206 %do_it%gone_car:-58 %do_it%leave_me:84 %do_it%money:70 %do_it%pay_day:46 %do_it%phone:-52
%do_it%season:139 %do_it%smoke_smell:-50 %do_it%staff:-77 %do_it%who:-49 %doubt%fails:65 %doubt%how_long:-81
%doubt%message:61 %doubt%money:117 %doubt%noise:-50 %doubt%on_way:-164 %doubt%pay_day:-62 %doubt%place:-51
%doubt%question:181 %doubt%refuse:77 %doubt%staff:-60 %doubt%start_again:136 %doubt%wrong_one:46 %elsewhere:187
%elsewhere%family:86 %elsewhere%gone_car:74 %elsewhere%leak:70 %elsewhere%leave_me:-100 %elsewhere%message:-49
%elsewhere%money:-141 %elsewhere%odometer:46 %elsewhere%place:-57 %elsewhere%question:-70 %elsewhere%refuse:-59
%elsewhere%season:113 %elsewhere%thanks:70 %elsewhere%who:104 %fails:-123 %fails%family:-46 %fails%gone_car:-64
%fails%how_long:-52 %fails%odometer:61 %fails%shift_it:102 %fails%thanks:57 %fails%wrong_one:-51 %family%gone_car:-58
%family%leave_me:-59 %family%lift:48 %family%money:58 %family%noise:-49 %family%refuse:60 %family%season:82
%family%staff:155 %family%start_again:60 %gone_car:-111 %gone_car%how_long:-95 %gone_car%message:80
%gone_car%money:71 %gone_car%noise:-47 %gone_car%odometer:161 %gone_car%on_way:123 %gone_car%pay_day:53
%gone_car%place:-53 %gone_car%question:85 %gone_car%refuse:85 %gone_car%season:128 %gone_car%staff:-49
%gone_car%thanks:62 %gone_car%who:94 %how_long%leave_me:-101 %how_long%meaning:-46 %how_long%on_way:65
%how_long%opening:53 %how_long%who:49 %leak%staff:94 %leave_me%message:-83 %leave_me%odometer:53 %leave_me%place:-51
%leave_me%question:-101 %leave_me%refuse:104 %leave_me%smoke_smell:72 %leave_me%staff:-100 %leave_me%start_again:-193
%leave_me%thanks:49 %leave_me%wrong_one:165 %lift%odometer:-55 %lift%on_way:-52 %lift%shift_it:-58 %machine:-53
%machine%staff:-54 %meaning%phone:-66 %meaning%question:-77 %meaning%staff:-50 %meaning%start_again:56
%meaning%thanks:48 %meaning%who:62 %message:-63 %message%odometer:-55 %message%place:-90 %message%question:-64
%message%refuse:-150 %message%shift_it:-64 %message%start_again:-223 %message%wrong_one:-95 %money:72
%money%on_way:122 %money%phone:-89 %money%refuse:140 %money%season:95 %money%shift_it:-53 %money%thanks:47
%money%wrong_one:57 %noise:-80 %noise%odometer:-70 %noise%question:-144 %noise%refuse:-85 %noise%staff:74
%noise%thanks:46 %noise%wrong_one:71 %odometer%phone:-65 %odometer%question:56 %odometer%season:106
%odometer%thanks:68 %odometer%wrong_one:-123 %on_way%phone:62 %on_way%place:-72 %on_way%question:-49
%on_way%refuse:101 %on_way%staff:-61 %on_way%start_again:106 %on_way%thanks:-112 %on_way%wrong_one:50 %opening:-127
%opening%refuse:88 %opening%shift_it:46 %pay_day:-73 %pay_day%thanks:85 %pay_day%wrong_one:54 %phone:-188
%phone%question:-104 %phone%refuse:119 %phone%shift_it:-139 %phone%thanks:59 %phone%who:97 %place:-48
%place%refuse:85 %place%staff:49 %place%thanks:51 %place%wrong_one:-58 %question:-144 %question%refuse:56
%question%staff:103 %question%start_again:81 %question%thanks:97 %question%wrong_one:66 %refuse:354 %refuse%season:52
%refuse%smoke_smell:54 %refuse%staff:48 %refuse%thanks:50 %refuse%who:-53 %refuse%wrong_one:-57 %season:-51
%season%thanks:59 %shake:-50 %shift_it:69 %shift_it%start_again:146 %smoke_smell:-60 %staff:71 %staff%start_again:-84
%thanks:-58 %wrong_one:-119 @?:-89 @after_visit:-454 @confirm:-578 @confirm_stop:139 @later:-223 @nothing:-347
@offers:76 @times:-256 ^_$:-104 ^_a:123 ^_ahi:-74 ^_ahora:-78 ^_all:-97 ^_am:-56 ^_and:-86 ^_any:-94 ^_anything:86
^_appreciate:118 ^_are:-61 ^_as:200 ^_ask:106 ^_ay:52 ^_both:-54 ^_cada:-50 ^_can:-154 ^_cant:194 ^_car:58
^_como:-299 ^_correcto:-102 ^_could:-94 ^_count:80 ^_cuanto:-52 ^_dale:-48 ^_deje:94 ^_dejen:-48 ^_did:-69 ^_do:-185
^_does:-55 ^_dont:76 ^_either:-193 ^_end:-49 ^_enough:-67 ^_es:-65 ^_eso:68 ^_estamos:190 ^_estoy:71 ^_fine:-62
^_forget:48 ^_found:145 ^_frena:101 ^_friday:52 ^_go:-60 ^_going:169 ^_good:-55 ^_got:91 ^_gracias:-176 ^_had:-88
^_happy:50 ^_hard:75 ^_how:-94 ^_hoy:49 ^_i:55 ^_id:81 ^_if:-54 ^_im:79 ^_imposible:53 ^_in:-53 ^_is:-101 ^_it:-52
^_jajaja:-48 ^_keep:56 ^_kids:118 ^_las:-51 ^_last:-97 ^_le:47 ^_lease:62 ^_leave:50 ^_leaving:94 ^_les:-60
^_lets:119 ^_lo:-54 ^_los:-83 ^_mal:88 ^_manana:68 ^_mandan:-50 ^_mas:-83 ^_me:-242 ^_mejor:225 ^_mil:-152 ^_muy:102
^_nada:110 ^_nah:79 ^_negative:72 ^_negativo:79 ^_neither:261 ^_nel:231 ^_never:219 ^_ni:240 ^_nice:262 ^_ninguna:110
^_ninguno:130 ^_no:224 ^_nombre:174 ^_none:140 ^_nop:47 ^_not:106 ^_nothing:200 ^_nvm:47 ^_ok:-226 ^_only:111
^_para:190 ^_paso:211 ^_pass:96 ^_pero:-87 ^_por:-110 ^_precio:-66 ^_prefiero:80 ^_puedo:-86 ^_pues:-60 ^_put:-76
^_quien:-65 ^_quiero:-57 ^_quiten:74 ^_rather:83 ^_salgo:-57 ^_scratch:86 ^_se:-94 ^_si:-216 ^_simon:-53 ^_skip:62
^_solo:52 ^_somebody:-52 ^_someone:-50 ^_soon:-48 ^_sorry:-46 ^_stop:63 ^_sure:109 ^_tell:-56 ^_tengo:207
^_thanks:-178 ^_that:159 ^_there:-91 ^_this:65 ^_thumbsup:-109 ^_thursday:124 ^_thursdays:73 ^_todavia:-124 ^_too:158
^_top:-52 ^_ustedes:-47 ^_uy:56 ^_va:-136 ^_we:138 ^_were:184 ^_what:-159 ^_when:-69 ^_who:-78 ^_will:-113
^_works:-69 ^_wouldnt:-71 ^_y:-192 ^_yeah:247 ^_yep:-85 ^_yes:-78 ^_yo:94 ^_you:-93 ^_your:-148 ^_zero:143 a_$:-96
a__a:48 a__and:-52 a__asi:72 a__call:-50 a__carro:69 a__casa:-56 a__cita:-51 a__el:-55 a__filter:-63 a__hora:58
a__horas:69 a__in:72 a__ir:-57 a__la:-52 a__le:-55 a__mechanic:93 a__mil:-53 a__nada:60 a__no:63 a__one:-75 a__por:50
a__que:115 a__si:-70 a__taller:-82 a__time:-109 a__who:106 a__with:58 a_buddy:73 a_cabin:-63 a_decir:75 a_esa:95
a_esas:79 a_good:-108 a_guy:175 a_hacer:138 a_la:-122 a_lift:48 a_light:52 a_los:85 a_mechanic:95 a_month:53 a_no:94
a_otro:91 a_ring:61 a_ser:57 a_year:85 about:74 about__tires:102 about_it:-53 about_monday:-79 about_my:89
about_oil:47 aceite:59 aceite_$:130 aceite_ya:-53 acomoda:49 after:46 after_$:-93 after__you:62 after_all:83
again_$:-94 agarran:-91 agarro:67 aguanta:-48 ah:-52 ahi_$:84 ahi_nos:-65 ahi_paso:-71 ahi_voy:-46 ahora:-82
ahora_$:-142 ahora__puedo:-55 ahora_no:-126 ahorita:-95 ahorita_$:-136 ahorita__en:87 ahorita_no:-90 aint:108
al__y:-46 alguien_$:-87 alguien_que:88 alignment:78 all:182 all_$:-115 all__it:-100 all_day:-80 all_good:114
all_set:89 all_that:113 all_three:-51 alone_$:48 already_did:-61 already_got:72 already_had:83 already_took:-46
also:69 am:-128 am_i:-53 amables:-57 amor:56 an_appointment:141 and:58 and__did:66 and__had:69 and__i:132 and_back:47
and_ill:51 and_im:48 and_it:-92 and_please:68 and_still:53 and_the:-90 and_why:75 and_your:58 ando:85 ando_de:74
ano_$:-57 anoche:-60 another_day:50 answer:58 antes:-74 any:-77 any__of:-51 any__those:-85 any_day:-49
anything_but:86 anything_else:-130 anyway:112 anyway_$:101 apenas:52 appointment_$:-57 appreciate_the:47
appreciate_you:52 apunteme:-69 apunteme_$:-69 aqui:-127 aqui_$:-78 aqui__vive:-52 aqui_no:-88 are__for:-70 are__i:48
are_fine:-69 are_too:-107 around_$:74 arreglaron:-68 arregle:-48 arreglo:73 arreglo_$:-53 as:155 as__as:-149
as_the:-78 as_you:-88 asi:334 asi__bien:49 asi__dejo:95 asi_es:-171 asi_lo:80 asi_que:-49 ask_$:49 ask__again:75
asked:-56 at:-47 at_$:-53 at_all:-78 at_the:-58 at_work:58 atencion:53 avisos:48 ay:52 ayer:-99 ayer_$:-49 baby:-56
back_from:-50 back_on:-56 back_to:-82 bad_$:89 baja:-59 barato:55 barely:58 be_$:100 be__i:50 be__that:48
be__there:66 be_back:117 be_doing:74 beater:83 beer:122 beer_$:122 before:-62 belt:63 bien:101 bien_$:-125
bien__la:54 bien_asi:71 bien_gracias:64 bien_no:89 bill:-46 book:-62 booking:68 both:-50 bother:69 brakes__a:48
brakes__stop:-68 brakes_dont:-81 bro:137 bujias:-48 busco_$:-53 busy:-85 but:142 but__you:63 but_do:68 but_dont:-85
but_friday:192 but_have:49 but_i:137 but_ill:58 but_monday:-78 but_no:47 but_that:71 but_the:-61 but_were:87
by_the:-65 cada:-56 cae:-63 caen:86 call:-88 call__my:71 call_me:-141 cambia:82 cambie__opinion:62 cambie_de:62
cambio:72 cambio_$:48 cambio__aceite:76 cambio_el:74 cambios:-93 came:-56 came__the:-58 can__come:117
can__friday:-122 can__it:73 can__me:59 can__my:48 can__the:51 can__with:93 can_make:-63 cancel:48 cancel__and:71
cancel_tomorrow:72 cancele__favor:46 cancele_por:46 cant:110 cant__about:-47 cant__in:70 cant__that:53
cant__thursday:56 cant__you:46 cant_do:201 cant_make:114 cant_say:-184 cant_swing:56 cant_think:-47 car__to:-60
car_has:114 car_is:154 caro:236 caro_$:104 carro:-80 carro__de:51 cars:103 casa_$:95 caso:75 caso_$:95 cat:-50
catch:-49 chances:77 chances_$:77 changed__mind:119 changed_it:-85 changed_my:118 changes_$:80 charge:-76 checked:66
chemo:62 chiste:91 chocaron:-46 chocaron_y:-46 choice:-53 choque:-67 church:56 cita:124 cita_$:-85 cita__jueves:74
cita__no:74 cita_el:110 claro_$:-60 claro__si:73 cliente:-61 close:-46 cobran:-49 cobran_$:60 cochera:49 cochera_$:49
come__the:52 come_back:51 coming__the:60 coming_in:59 como:-84 como__me:74 como__que:73 como_esta:135 como_no:-295
como_saben:68 como_si:99 company:57 con:71 con__frenos:72 con__mecanico:-75 con__que:66 con__trabajo:54
con_alguien:-48 con_los:53 con_otro:69 con_un:92 conozco:-125 correct:-63 correcto:-58 corto:-50 cosas_$:58
could__the:58 could_do:55 could_you:56 count:67 count__in:-55 count__out:125 count_me:70 covered:75 covered_$:100
creo:91 cross:80 cualquier:-61 cuanto:51 cuanto__lo:-64 cuanto_es:99 cuanto_rato:76 cuenta:-52 curiosidad:62
curiosity:47 customer:-48 customer_$:-46 da:-93 dale:-48 dar:93 dawn:62 day_$:95 day__me:96 day_for:79 de__carro:-47
de__frenos:72 de__llantas:114 de__me:81 de__no:-75 de__que:107 de__taller:-83 de__y:-75 de_cuanto:62 de_dinero:-76
de_donde:96 de_eso:47 de_esta:97 de_freno:-47 de_grasa:-52 de_la:49 de_las:117 de_los:94 de_mi:52 de_noche:111
de_opinion:62 de_otro:-54 de_que:-48 de_semana:71 deal_with:76 dealer_$:47 dealers:50 debo:65 decide:-55 decided:127
deep:-53 dejalo:131 dejaron:58 dejelo:52 dejenlos:81 dejo:71 dejo_$:94 dejo_asi:106 del:67 demas:57 deme:85 deseo:65
desk:52 despues:-46 despues_$:-48 di:-99 dia_$:77 dia__a:61 dia__no:-57 did:-93 did_that:-69 did_the:-91 diesel:57
diga:-69 digo_$:-46 digo_que:53 dije:68 dije_que:76 dijeron:-46 dime:70 dinero_$:-77 direccion:-60 do_$:-152
do__and:63 do__do:55 do__instead:-122 do__of:142 do__own:220 do__want:-68 do_any:75 do_i:-82 do_it:-64 do_monday:52
do_my:220 do_not:-73 do_the:125 do_thursday:56 doble:67 doc:-63 does__need:-53 does_all:58 does_it:-62 doesnt:140
doesnt_matter:-86 doesnt_work:149 dogs:105 doing:66 doing_that:50 doing_the:64 done_$:54 done__a:64 done_in:87
dont:83 dont__any:-123 dont__it:99 dont__like:65 dont__that:66 dont__the:93 dont__you:-74 dont__your:155
dont_drive:-67 dont_even:-87 dont_have:-154 dont_know:-122 dont_need:114 dont_own:-85 dont_see:-70 dont_send:-62
dont_stop:166 dont_think:211 dont_want:202 doors:-66 dos__es:108 dos_dias:106 down:-187 down_$:-59 down_for:-51
drive:58 drive_$:-128 drive_it:83 drive_to:48 driving_it:53 driving_with:-62 dude:-164 due:-56 early_for:84
early_one:-77 eat:86 echo:71 eh:-48 either:-116 el:-61 el__dia:-57 el__es:106 el__les:68 el__no:84 el__temprano:-62
el__y:-117 el_aceite:97 el_ano:59 el_asiento:47 el_cambio:-78 el_de:-59 el_dealer:-54 el_dia:-107 el_dinero:72
el_domingo:-73 el_fin:71 el_freno:-49 el_jueves:114 el_lado:89 el_otono:-76 el_otro:-138 el_precio:-46 el_que:-84
el_trabajo:-53 el_viernes:110 else:59 else_$:46 en__casa:148 en__dias:108 en__garage:71 en__que:54 en__taller:-51
en__ya:66 en_dos:108 en_el:99 en_eso:81 en_mayo:59 en_mil:52 en_otro:-65 end:-80 ended:-47 ends:49 enough:59
entendi:-52 entiendo:-54 entran:-93 era_del:46 es_$:-126 es__de:54 es__la:61 es__lo:-50 es__no:50 es_lo:-58
es_mecanico:99 es_mi:-93 es_muy:65 es_por:-46 esa:101 esa__no:62 esa_hora:141 esas:157 esas_horas:65 escriban:-50
escriban_$:-69 ese:62 ese__ya:54 ese_carro:95 ese_dia:56 ese_senor:-50 eso:54 eso_$:75 eso_de:69 eso_es:71 eso_me:49
esos:129 esperar:57 espero:47 espero_$:77 esta:50 esta__asi:71 esta__caro:164 esta__no:57 esta_en:73 estamos:131
este:-84 esten:-101 esto:-73 estoy:109 estoy_bien:263 estoy_de:-69 estoy_en:-66 evening:-72 evenings:70 ever:80
ever_$:50 everywhere:61 existe:-57 extra:95 fall:55 fall_off:94 falta:-54 family:-47 far:93 favor__no:47 favor_y:47
fecha:47 fecha_$:47 fee:-46 feria:-124 feria_$:-102 fierro:-47 fierro_$:-63 filter:99 fin:58 fin__semana:71 fin_de:58
fine:80 fine__it:140 fine__me:-104 first:-64 five:-48 fix:52 fixed:-59 fluid_flush:-47 flush:106 fly:459 folks:49
for:122 for__me:-50 for__of:94 for_an:-65 for_friday:-64 for_it:-120 for_me:165 for_now:135 for_sure:58 for_that:93
for_the:-78 for_this:125 forget_about:-148 forget_it:177 found:112 found_$:-50 free:-49 freno:-107 freno_$:-58
frenos:69 frenos_ya:74 friday_$:107 friday_and:63 friday_instead:-122 friday_is:55 friend:-79 from_me:47 fue:52
full:76 galon:106 game_$:-54 gano:66 garage:58 garage_$:68 gas:-71 gastadas:47 gastar:-86 gauge:-72 gauge_is:-72
gave:57 gave_you:108 get:-63 get__to:-64 get_it:-52 girl:77 give_my:49 giving:111 go:-103 go_$:59 go__the:108
go_ahead:-56 go_into:-55 go_through:69 go_to:140 going__have:53 going_to:47 good:78 good__me:-56 good_for:-114
got__guy:179 got_a:161 got_it:-59 gracias_$:52 gracias__no:58 gracias_pero:151 gracias_ya:55 gusta:77 gusta__me:52
gusta_que:52 gusto:-75 guy:111 guy_$:56 guys_$:-78 hablamos_$:55 hable:58 hace:-111 hace_$:-53 hace_falta:56
hace_ruido:-46 haciendo:53 had_to:76 haga:142 hago:67 handled:-75 handles:93 happen:65 hard_no:66 hardly:60 has:64
has__on:84 hasta__no:-68 hasta_el:-56 hasta_que:47 have:63 have_$:-79 have__no:-103 have__owner:103 have__to:65
have_an:110 have_it:-76 have_never:-95 have_no:-115 have_someone:88 hay:-66 hay_que:-46 hear:-49 heat:-80 her:-62
her_$:-113 here:-79 hice_en:113 hicieron_esperar:68 hijo_me:63 him:-74 him_$:-65 holler:-47 hon:59 hora:49 horn:-50
hot:-78 hour:57 house_$:89 how:51 how__is:79 how__monday:-79 how_about:-89 hoy:70 hoy_$:90 hoy_manana:71 huh:-130
huh_$:-130 hun:51 i__asked:-56 i__be:74 i__do:49 i__drive:86 i__got:50 i__my:57 i__no:-92 i__off:58 i__on:99
i__out:-166 i__say:-46 i__stop:53 i__the:-59 i__this:-86 i__where:-59 i_am:-50 i_come:151 i_could:49 i_didnt:-102
i_dont:-102 i_found:151 i_go:91 i_got:57 i_had:-49 i_let:-88 i_live:-102 i_mean:-48 i_meant:92 i_need:-144
i_never:-93 i_put:88 i_ride:55 i_said:-88 i_take:77 i_teach:108 i_want:-123 i_was:-88 i_will:84 i_wont:77 iba:68
id:101 id__a:-67 id__talk:-99 id_be:-64 id_like:49 id_sooner:99 idea:-83 idea_who:-69 if:99 if__dont:-46 if_i:-135
igual:48 ill:112 ill__in:-55 ill__my:84 ill__there:-47 ill__you:-84 ill_be:-58 ill_come:-78 ill_let:127 ill_pass:62
im:160 im__going:54 im__my:51 im__out:-50 im__paying:63 im__that:83 im__the:-156 im__to:67 im__with:-70 im__work:59
im__your:-51 im_a:47 im_all:75 im_at:50 im_down:-79 im_fine:217 im_good:313 im_not:-160 imposible:80 in_$:-70
in__day:109 in__month:55 in__so:125 in__weeks:81 in_another:-89 in_law:61 in_tuesday:55 in_weeks:47 interesa:-82
interesa_$:-178 interested:-74 interested_$:-188 interested_in:47 into:57 ir_y:53 is_$:102 is__a:-53 is__again:-53
is__at:72 is__but:-48 is__cabin:-53 is__early:63 is__how:140 is__in:127 is__it:56 is__like:-51 is__no:58 is__of:-52
is__something:-53 is__the:-51 is_a:95 is_alright:57 is_done:49 is_fine:159 is_full:110 is_good:-228 is_it:-51
is_like:62 is_my:75 is_no:92 is_not:-126 is_out:177 is_that:-79 is_there:-51 is_too:130 is_up:46 is_when:66 it:81
it__already:50 it__at:-58 it__by:48 it__dont:79 it__fine:139 it__free:59 it__in:-56 it__just:70 it__me:-100
it__more:-82 it__needed:61 it__now:-59 it__though:-56 it__time:-48 it__to:-156 it_at:60 it_back:62 it_but:106
it_can:47 it_done:58 it_down:-63 it_in:-79 it_just:-49 it_like:-48 it_myself:60 it_off:59 it_over:48 it_thanks:-54
it_then:-81 it_this:-84 it_til:66 it_till:71 it_was:60 it_wont:-61 jaja:70 jaja_$:153 jaja_si:-56 jefe_$:46 job:-78
just:81 just__it:-47 just__that:91 just_had:-49 keep:116 keep_me:116 keep_texting:102 keep_them:46 kids_have:81
know:-72 know_what:73 know_you:-60 la__a:-84 la__el:-51 la__pero:-56 la_atencion:59 la_camioneta:50 la_casa:79
la_cita:-48 la_cochera:49 la_luz:-56 la_mano:51 la_pena:71 la_renta:63 la_revision:-47 la_tarde:-53 la_voy:-53
lado:81 las_$:-141 las__a:50 las__el:166 las__en:-47 las_llantas:64 las_millas:-78 las_puedo:62 las_tres:74
last__so:93 last_time:47 late__the:96 late_in:96 later:-50 law:60 le__al:-50 le__el:66 le__la:108 le__las:-47
le__mas:82 le__que:105 le__yo:105 le_cambio:93 le_di:-67 le_echo:71 le_falta:-74 le_hice:-58 le_puedo:-54 le_toca:49
le_voy:78 lease:144 lease_is:128 leave:119 leave__the:51 leave_it:155 leave_me:-191 lejos:138 let:74 let__know:-46
let_it:143 let_me:-91 let_you:-47 lets:65 lets_do:-99 lets_out:-57 like:51 like_a:80 like_i:75 like_that:-47
listo:-49 live:142 live_in:-58 llame_el:60 llantas:57 llantas_$:58 llego:-57 lleva_millas:55 lleve:-72 lleve_con:-64
llevo:82 llevo_$:-75 llevo__mi:79 lo__asi:127 lo__con:61 lo__de:-66 lo__gracias:58 lo__para:67 lo__por:-49 lo__si:66
lo__y:-59 lo__yo:123 lo_arreglo:94 lo_cambie:-50 lo_cambio:61 lo_choque:-67 lo_deje:-67 lo_demas:66 lo_hace:54
lo_hago:105 lo_hice:50 lo_hicieron:-64 lo_hizo:-51 lo_lleve:-72 lo_llevo:58 lo_necesito:-70 lo_que:70 lo_uso:85
lo_vendimos:-53 lo_voy:137 loco:149 lol:55 lol_no:71 long:-49 longer__it:-127 longer__the:-94 longer_have:-70
longer_own:-119 looking:-89 looking_for:-63 looks:61 los__el:77 los__para:-69 los__ya:51 los_avisos:47
los_cambios:-93 los_carros:59 los_nenes:72 lost:-48 lot:-71 low:64 luego_me:51 lunes__no:46 luz:-56 luz_de:-48
maam:83 made:-56 make__to:-47 mal_$:-57 mal__no:88 man_$:-54 manana:-77 manana_y:71 manda:60 mandando_$:213 mande:-50
manden:-77 manden_mas:-78 manden_mensajes:91 manden_nada:-59 mandenme:52 many:-67 marcha:-101 marcha_$:-101
martes:-59 mas:-81 mas_$:-110 mas_temprano:-67 matter:-90 matter_$:-63 may:-60 mayo:59 me_$:-97 me__cambia:71
me__con:-54 me__de:91 me__esperar:64 me__falta:49 me__for:58 me__i:81 me__it:-92 me__la:126 me__mal:101 me__muy:-94
me__nada:-172 me__of:-105 me__por:-62 me__price:80 me__ring:61 me__sus:62 me__the:-46 me__una:49 me__y:84 me__ya:57
me_about:223 me_acomoda:49 me_after:-91 me_alone:-152 me_back:-67 me_but:79 me_da:56 me_dejaron:54 me_es:68
me_from:53 me_gusto:-77 me_hable:58 me_hace:48 me_hicieron:53 me_i:-77 me_im:51 me_in:-117 me_interesa:-71 me_like:88
me_llame:47 me_lo:123 me_now:117 me_off:-59 me_out:71 me_please:-139 me_queda:51 me_rayaron:48 me_sale:-135
me_sirve:147 me_the:130 me_then:-46 me_with:-68 mean:64 mean_$:-53 mecanico_$:77 mechanic:51 mejor:81 mejor__lo:125
mejor_el:-68 mejor_la:-67 mejor_lo:100 mejor_me:63 menos_que:63 mensajes_$:-101 mero:-51 mero_$:-51 mi__de:-72
mi__es:79 mi__le:118 mi__me:112 mi_amor:56 mi_nombre:-48 mi_numero:-50 mi_tio:71 mi_trabajo:64 mil:-87 mil_ya:66
miles_$:-104 millas:49 mind_$:-96 mine:71 mismo:71 mismo_dia:-57 molesten:49 momento:-178 momento_no:-174 monday:-121
monday_$:56 mondays:65 mondays_$:72 month_$:-74 more:-127 more_$:-78 morning:-60 morning_$:-62 moved:60 moved_to:46
much_is:-73 muere:56 muy:254 muy__gracias:-57 muy_amables:-57 muy_caro:87 muy_lejos:106 muy_mal:-61 muy_temprano:122
my:46 my__are:-61 my__back:-55 my__but:-74 my__comes:-47 my__did:63 my__do:-54 my__dont:-60 my__in:100 my__no:79
my__not:-68 my__says:94 my__this:51 my_car:-139 my_chances:77 my_guy:-95 my_job:-69 my_mechanic:-99 my_mind:127
my_money:-70 my_own:378 my_phone:-63 my_shift:76 my_wallet:71 my_warranty:61 my_whole:-59 my_wife:72 myself:80
myself_$:127 n:302 na:262 nada:66 nada_$:-84 nada__eso:60 nada__ustedes:-56 nada_de:-57 nada_mas:61 nah:79 name:-46
nd:-50 necesario:58 need:-81 need_$:81 need_a:-53 need_the:62 need_to:-149 needed_$:132 needs_doing:-91 negative:72
negativo:79 negocio:59 neighbor__it:67 neither:151 neither_$:136 nel:231 nenes:72 never__back:51 never__you:88
never_asked:-56 never_mind:139 new__on:-80 new_ones:-84 next_$:-70 next_year:63 ni:234 ni_de:82 ni_el:138 ni_la:109
ni_lo:53 ni_modo:-53 nice:82 nice__you:-69 nice_of:-69 night:75 night_$:-51 ninguna:54 ninguna_$:60 ninguna_me:79
ninguno:61 ninguno__los:51 no:103 no_$:327 no__a:-60 no__ahora:-165 no__all:-55 no__amor:62 no__and:-55 no__at:-115
no__bien:-207 no__cita:115 no__como:-93 no__conmigo:53 no__conozco:-55 no__da:56 no__dont:95 no__el:-67 no__en:-101
no__ese:-53 no__for:-54 no__good:87 no__gracias:121 no__gusto:-77 no__hace:67 no__hago:-84 no__have:-57 no__here:-148
no__i:71 no__interesa:219 no__is:207 no__last:84 no__le:73 no__les:98 no__lo:-48 no__mandando:-76 no__me:79
no__mensajes:-58 no__nada:-67 no__necesario:104 no__necesito:85 no__needed:-75 no__ni:-97 no__ninguna:-73 no__no:-97
no__now:-67 no__on:-94 no__otra:103 no__otro:-59 no__own:-119 no__problema:-75 no__puede:61 no__que:-76 no__quien:-96
no__quiero:52 no__recibir:-85 no__sirve:108 no__that:-114 no__the:249 no__them:52 no__was:85 no__with:-64
no__would:77 no__y:190 no__yet:-112 no__yo:-113 no__you:235 no_and:295 no_but:192 no_car:-89 no_como:51
no_conozco:-63 no_creo:141 no_day:-66 no_deseo:65 no_dont:66 no_era:-50 no_es:-175 no_esta:-144 no_estoy:-58
no_existe:-57 no_frena:-56 no_good:63 no_gracias:334 no_hay:-90 no_i:287 no_idea:-154 no_im:109 no_just:78 no_keep:96
no_lo:-105 no_mas:-98 no_me:-85 no_mejor:-55 no_mi:56 no_more:-231 no_my:171 no_necesito:97 no_need:48 no_no:-90
no_noise:-49 no_not:-202 no_ocupo:171 no_on:77 no_one:-121 no_paren:82 no_pedi:-57 no_pero:150 no_point:66 no_por:46
no_prende:-76 no_problem:-239 no_puedo:138 no_pues:107 no_que:112 no_quiere:-76 no_quiero:84 no_se:-103 no_si:130
no_sigan:-72 no_sirve:-54 no_soy:-217 no_tengo:-198 no_thank:56 no_thanks:216 no_that:79 no_the:75 no_tiene:-47
no_to:-80 no_trabajo:-60 no_trae:47 no_traigo:-103 no_va:60 no_veo:-81 no_vive:-52 no_vuelvo:61 no_what:151
no_worries:-118 no_y:152 no_ya:257 no_you:60 noche:61 noche_$:86 noises:71 nomas:50 nomas_que:-72 nombre_$:-100
none:194 none__them:75 none__those:-62 nop:47 nos:-74 not_$:55 not__but:-83 not__car:-79 not__customer:-47
not__ill:-59 not__in:104 not__it:85 not__not:90 not__now:-83 not__one:46 not__the:70 not__this:-90 not__to:173
not__with:-135 not__yet:-116 not__you:81 not_a:-115 not_be:48 not_coming:96 not_doing:73 not_ever:105 not_friday:58
not_happy:-161 not_her:-125 not_him:-87 not_interested:263 not_me:-236 not_monday:179 not_now:-69 not_right:-122
not_sure:-75 not_the:-54 not_this:61 not_to:49 not_today:-88 not_worth:50 not_yet:-142 nothing:48 nothing_$:-49
now:-80 now_$:-197 now__me:-90 numero:-48 nunca_$:99 nvm:47 o:-61 o__es:72 o__no:-106 o_cuanto:85 o_no:-129
ocupo_$:52 of__but:61 of__do:47 of__how:-55 of__what:46 of_me:55 of_you:-87 off_$:-132 off_and:84 off_for:54
off_my:46 oh:-73 oil:75 oil__the:71 oil_no:50 ok:71 ok_$:164 olvidelo:121 on_$:65 on__thought:74 on__way:-47 on_a:-59
on_it:75 on_my:-97 on_second:74 on_that:94 on_this:50 on_time:-56 one_$:53 one__these:46 one__those:76 one__you:49
one_please:-53 ones:169 only:109 only_$:65 only__me:94 opcion_$:-68 open__me:-56 open_for:-56 or:-110 or_anything:88
or_no:-188 otono:-76 otra_fecha:47 otro_$:-104 otro_dia:96 otro_taller:59 our:119 out:59 out__me:65 out_for:54
out_of:-75 out_on:52 over_$:-53 over__phone:-54 over_here:110 over_the:-92 overcharged:63 own:68 own_$:87 own_it:-131
owner__me:60 paid_for:-49 para__es:-48 para__lo:-151 para__si:99 para_nada:262 para_que:51 paren:66 part:-46
parte_de:-69 pasa:-78 pasa__no:-62 paso_el:-69 pass:241 pass_$:134 passed:-74 paying:57 pedal:-59 pedal_is:-56
pedi:-57 pena:79 pense:46 people:-50 perdon:-47 perfecto:53 pero:73 pero__me:-50 pero__voy:76 pero_de:49 pero_lo:56
pero_no:49 perro:71 person_$:86 pick_up:76 planes:50 please:-103 poder_ir:-57 point_$:49 pop:-55 poquito:-52
por__lado:83 por__no:-178 por__que:46 por__y:142 por_curiosidad:62 por_la:-65 por_mi:73 por_que:-294 por_un:57
porque:-49 possible:-63 possible_$:-46 precio_$:-84 precio__las:-63 precio_de:-63 precios:77 prefiero:85
prefiero_no:68 prende:-75 price_and:68 prices:52 primo:68 problema:-75 prometieron:53 pronto:-48 puede_$:71
puedo_$:95 puedo__las:-71 puedo_el:102 pues_$:51 pulling:-47 puro:101 push_it:74 put:-56 put_new:-75 put_on:62
putting:110 que_$:51 que__caro:-77 que__de:78 que__en:46 que__hable:58 que__le:-64 que__llame:66 que__lo:49
que__ni:50 que__que:-70 que__se:-90 que__toca:52 que__ya:104 que_ahora:-62 que_cobran:78 que_es:-102 que_les:-52
que_lo:-93 que_mal:76 que_ni:-83 que_no:-65 que_precio:86 que_tanto:-47 que_truene:66 que_va:277 queda:135 queda_$:53
queda__lejos:127 queda_muy:106 quede:-48 quedo_mi:48 quien__lo:122 quien_es:-86 quien_me:67 quienes:-47 quiero:-81
quiero_$:-127 quiero__de:-77 quiero__nada:-85 quiero__que:53 quiero_cita:76 quiero_ir:62 quiero_recibir:-85 quit:57
quit__me:-53 quit_sending:65 quit_smoking:52 quit_texting:-67 quita:-66 quita_$:-66 quiten:63 quiten__cita:74
quiten_mi:85 quitenme_$:-122 rather:53 rather__to:-99 rather_not:49 rather_talk:-136 rato:56 rayaron:47 re:61
reach:-53 reach_out:-53 really_$:103 recibir:-113 recojo_a:68 reminders:55 reminders_$:54 remove__from:53 renta:63
respuesta:55 rest:94 reverse:-55 revision:-47 ride_$:61 right:75 right_$:361 right__i:65 right_now:-155 ring_$:60
ring_me:-67 rotation:56 ruidito:-66 ruido:48 runs:66 saben:87 saber:-79 said_no:-48 sale_$:57 salen:-46 salgo_de:96
saturday_$:47 say:-53 say_no:-78 says_$:-61 says_no:147 school_$:70 school__out:-57 school_bus:54 school_lets:-57
scratch:46 scratch_that:140 se:-86 se__es:-58 se__eso:-108 se__hicieron:-49 se__llevo:-54 se__no:-48 se__que:-76
se_me:157 se_puede:58 se_quienes:-47 se_quita:-66 sea:-79 seat:-73 second_$:-62 second_thought:74 see:-87
segunda_$:53 selling:145 send:-54 send__the:61 send_me:-62 sending:49 senor:53 ser_$:66 sera:-47 seria_$:49
serious:-48 set:154 set_$:193 set_for:112 shes:55 ship:60 shop:-83 shop_is:-53 si:-99 si_$:-155 si__dejo:-48
si__no:-189 si_claro:74 si_fuera:74 si_gracias:-49 si_lo:-48 si_me:93 si_no:-81 si_quiero:-47 si_ya:-137 siempre:58
siempre_no:67 sigan:84 simon:-53 sir:73 sirve_$:46 sit:87 sits:107 six:-46 skip:144 skip_the:122 so:95 so__my:57
so__of:-67 so_im:67 so_no:217 so_not:90 so_you:63 sold:-169 sold__car:-50 sold_the:-50 solo:96 some:-55 someone:81
somewhere:46 son:-83 son_$:-50 son__law:53 son_in:53 sooner:59 soonest:-53 sorry:58 sorry_$:73 soy:-237 soy_de:83
soy_yo:-92 spending:88 squeak:113 stay:92 stop:-133 stop__me:162 stop__the:64 stop_by:96 stop_texting:-101
stop_with:64 stuff:97 stuff__the:-47 su:61 su__de:-52 sunday:72 sure_thing:-59 swap:47 swapped:-70 swing_it:56
take__back:126 take__chances:77 take__off:-68 take_me:-69 take_my:50 taken:-53 taken__of:-53 taken_care:-53 takes:53
takes__of:108 takes_care:108 tal:-52 talk:-103 talk_to:-65 talked:146 taller_$:-56 taller_de:116 tan:-83 tanto:-56
tarde:66 te:-82 teach:108 telling_me:-71 temprano_$:-51 tengo__con:-83 tengo__me:73 tengo_carro:-121 tengo_otro:93
tengo_quien:73 tengo_un:96 text:-49 text__about:94 text_me:69 texting_$:-109 texting_me:56 texts_$:-75 texts__me:-80
texts_please:117 th:-103 than_the:-80 thanks__the:97 thanks_anyway:179 thanks_but:163 thanks_for:-176
that__alright:57 that__has:60 that__i:-51 that__me:67 that__the:-128 that__when:54 that__you:179 that_in:-62
that_is:96 that_one:77 that_time:-58 that_was:46 that_will:-62 that_wont:47 that_works:-66 the_$:-95 the__already:-46
the__but:74 the__dont:62 the__filter:59 the__for:233 the__have:-48 the__how:46 the__in:-58 the__is:160 the__it:48
the__my:-49 the__myself:-47 the__no:86 the__not:78 the__of:-96 the__one:50 the__ones:172 the__stuff:110 the__this:-54
the__two:-59 the__went:55 the__with:-46 the__you:67 the_alignment:58 the_belt:49 the_brakes:74 the_car:84 the_day:105
the_floor:48 the_flush:152 the_friday:48 the_kids:-73 the_lease:48 the_next:-71 the_only:-56 the_other:-56
the_phone:62 the_rest:94 the_texts:74 the_th:-112 the_thing:67 the_thursday:80 the_tire:106 the_tires:103
the_transmission:47 the_truck:-61 the_trunk:62 the_van:-47 the_wheels:95 the_wiper:92 the_worst:48 the_wrong:53
them_$:46 then_$:143 there__no:-71 there_by:50 there_is:-88 these_days:73 theyre:51 thing_$:87 think__it:-76
think_about:-64 think_so:118 think_this:-91 thinking:53 thinking_of:73 this__again:47 this_is:-92 this_month:-117
this_one:133 this_time:100 this_was:-56 this_week:-53 those:67 though_$:-76 thought:53 thousand__it:97
thousand_miles:-87 thousand_on:97 three:127 three_$:105 through:-51 thumbs:-113 thumbsup:-109 thumbsup_$:-72
thursday__work:65 thursday_is:70 tiene:-76 tiene_millas:47 tienen:104 til_my:-53 time_$:55 time_im:-58 times_$:52
tio:71 tire:108 to_$:-65 to__all:51 to__for:-46 to__it:52 to__me:-97 to__no:105 to__on:-71 to__this:67 to__through:69
to_be:-57 to_church:89 to_do:98 to_hear:-49 to_it:-64 to_me:60 to_say:102 to_sit:80 to_someone:-76 to_stop:-57
to_that:-105 to_the:87 todas:69 todavia_no:-124 today:-59 today_$:-68 todo__dia:-50 todos:49 told:-66 tomorrow_and:71
too:285 too_$:-146 too__for:156 too_early:263 too_far:60 took:-59 total_$:-47 town:-53 trabajan:-69 trabajando:79
trabajo_en:57 trae__millas:47 trae_mil:47 trae_un:-68 traer:48 traigo:-80 tread:53 tres_$:78 truene:66 trunk:62
trunk_$:62 trust:-49 try:188 try_me:-65 tu:150 tuesday:-72 turned:-47 two:-92 type:-51 uh:290 un__a:-75 un__o:49
un_amigo:51 un_ruidito:-66 un_viaje:-65 unless:66 unless__is:88 unless_it:88 unsubscribe_$:-46 unsubscribe_me:72
up_$:-71 up__phone:73 up__the:-60 up_in:80 up_on:-54 up_the:111 uso:83 uso_$:67 ustedes_$:-251 uy:56 va:122 va_$:91
va__mil:63 va__va:-93 va_a:58 va_que:-94 van:-74 ve:113 vea:-47 vehicle:-81 vender:84 vendi:-129 vendi_$:-98 veo:-71
ver_$:66 verdad_$:-80 verdad_no:76 viaje:-73 vida:-59 viernes_$:71 viernes_no:48 vive:-52 volver:80 voy:73 voy_$:-49
voy__hacer:94 voy__que:-48 voy_a:147 voy_pero:-52 vuelta:-53 vueltas:78 vuelva:67 vuelvo:55 wait:-46 walk:78
wallet:71 want__done:103 want__hear:-49 want__of:-93 want__texts:-115 want_it:118 want_that:117 want_the:50
want_your:-125 was__for:-65 was__in:-46 was_done:-46 way:130 we:131 we__to:56 we_dont:-74 we_got:46 we_have:116
we_sold:-91 we_will:232 wednesday:84 week:-67 weeks:57 well_$:-50 went_away:71 were:145 were_fine:66 were_happy:82
what__was:61 what__you:-75 what_it:65 what_would:69 when:94 when__back:-69 when__is:-71 when_im:-75 when_it:-65
when_school:-57 where:-64 while:-55 who:98 who__are:-74 who__it:64 who__you:69 who_you:-126 why:-91 why__i:114
why_does:-56 why_not:-208 why_would:130 wife_says:50 will__be:113 will__it:83 will_not:61 wiper:72 wipers_$:112
with_$:-46 with_it:112 with_someone:-65 without:71 wont:69 wont__over:-54 wont__there:53 wont_be:155 wont_go:-49
wont_work:137 work_$:-89 work__me:91 work_for:90 worries:-118 worth:149 worth_it:111 would__be:-56 would_be:-71
would_i:48 wouldnt:-71 wrenches:82 wrong:-64 wrong__i:54 y:87 y_$:-56 y__de:52 y__lo:-125 y__los:54 y__me:-62
y__no:62 y__que:-63 y_como:94 y_de:-51 y_el:69 y_la:55 y_no:48 y_por:75 y_que:123 y_ya:-98 ya:-118 ya__existe:-57
ya__hace:-140 ya__la:-58 ya__las:-46 ya__lleve:-71 ya__lo:-58 ya__me:90 ya__mil:52 ya__puse:46 ya__quiero:47
ya_le:-57 ya_lo:-74 ya_me:-58 ya_paso:-62 ya_tengo:94 yeah:-60 yeah_$:-287 yeah_i:-97 yeah_ok:-139 yeah_that:-64
year:82 yep:-85 yep__is:-49 yes:-175 yes_$:-50 yet:-288 yet_$:-127 yo:159 yo_$:-72 yo__la:176 yo__manejo:-85
yo__se:69 yo_lo:165 yo_mismo:111 yo_ni:-110 yo_no:-156 yo_paso:-83 you_$:-55 you__do:56 you__even:60 you__give:48
you__i:-51 you__it:-106 you__stop:-49 you__the:-80 you__what:116 you_are:-68 you_can:123 you_did:68 you_know:84
you_my:84 you_overcharged:70 you_still:-49 you_think:-117 you_want:-92 young:62 your__is:-53 your_customer:-46
your_shop:-53 your_texts:-103 zero:145
"""
