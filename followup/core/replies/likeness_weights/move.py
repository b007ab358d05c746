"""What speaks for and against `move`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "move"
BIAS = -361
WEIGHTS = """\
#abad:34 #abia:70 #abor:-68 #abou:90 #abra:57 #aced:34 #acei:-28 #acem:48 #acom:39 #actu:-55 #adel:133 #adin:-31
#ados:51 #adua:77 #afte:58 #agen:72 #ager:-50 #ages:35 #ahor:-37 #aigh:45 #aile:38 #aite:48 #aiti:-35 #akin:38
#alca:35 #alen:27 #algu:-46 #alie:-45 #alig:-52 #alir:49 #alli:28 #alqu:40 #alri:27 #alta:-41 #alte:80 #alto:-44
#aman:61 #amar:30 #ambi:163 #amel:72 #amen:33 #amme:28 #amos:141 #ampo:-38 #anca:-31 #anch:67 #anco:37 #andb:34
#ando:37 #ands:51 #anec:61 #aner:45 #ania:33 #anic:-30 #aniz:27 #anme:46 #anne:40 #anoc:32 #anot:80 #ansf:29 #anta:63
#anto:63 #anul:-31 #anyb:48 #anym:34 #anyt:48 #anzo:44 #apar:48 #apia:51 #apid:-32 #apor:37 #appe:-32 #appo:48
#apun:-33 #aran:-38 #arar:-60 #arda:-43 #arde:78 #ardo:-31 #arga:43 #arla:124 #arli:72 #arly:37 #arme:37 #aron:41
#arou:-49 #arre:-36 #arta:54 #arte:45 #asam:38 #asar:90 #asel:162 #asem:155 #asen:34 #asis:-46 #aske:36 #asta:44
#ater:46 #athe:103 #atin:31 #ativ:66 #atra:107 #atur:73 #avor:60 #ayer:-29 #back:39 #bado:34 #baja:-27 #band:37
#base:35 #bate:28 #batt:44 #beat:45 #bebe:-34 #befo:-49 #bers:35 #bett:54 #biam:86 #biem:156 #bien:45 #bios:-78
#blan:29 #blew:34 #body:59 #boni:-37 #book:106 #borr:-107 #boss:61 #bout:90 #bric:30 #brig:-44 #brin:-120 #buji:46
#bump:37 #busc:29 #busq:66 #caba:31 #caci:-27 #cale:32 #camb:223 #came:112 #camp:-65 #canc:-99 #cant:29 #canz:35
#carg:43 #cart:65 #casi:64 #ceit:-28 #cell:56 #cesi:46 #chad:28 #chan:64 #ched:84 #chem:-35 #choo:46 #cibe:-31
#cide:-36 #cion:33 #cita:78 #ciud:52 #ckin:33 #clic:29 #cloc:56 #cole:41 #come:39 #comp:82 #conc:28 #cons:76 #coot:79
#corr:248 #cort:51 #cost:-32 #coul:107 #coun:-29 #cret:28 #ctio:-29 #ctor:40 #ctri:49 #ctua:-46 #cuch:48 #cuid:73
#cuna:32 #dado:85 #dals:29 #dame:96 #dand:28 #dara:-27 #date:106 #dead:37 #dear:30 #deci:-28 #deja:104 #dejo:-30
#dela:119 #deme:118 #demo:32 #denm:29 #desc:49 #dese:-33 #deso:27 #desp:-53 #dewa:35 #dias:118 #diat:40 #dice:35
#didn:28 #dido:39 #dier:-63 #diga:37 #digo:-41 #dime:43 #ding:-59 #dist:59 #dnes:45 #dobl:50 #doct:32 #does:96
#domi:51 #dond:-39 #dont:-88 #doub:66 #down:69 #dria:93 #dura:29 #eadi:-31 #eady:-35 #eage:145 #eaki:31 #earl:91
#eart:-42 #ease:32 #eati:31 #ecar:-40 #eces:41 #echa:133 #echo:-43 #ecib:-31 #ecio:68 #ecit:63 #ecor:139 #ecti:-29
#ectr:49 #edal:50 #edar:-30 #eden:-43 #edes:90 #edne:45 #eeds:53 #eena:-42 #efor:-49 #egan:33 #egar:-39 #egat:65
#egui:48 #egun:39 #eite:-28 #eith:-45 #ejam:47 #ejar:34 #ejem:27 #ejor:82 #elan:126 #elec:48 #elev:32 #ella:-35
#ello:-30 #else:107 #elta:59 #elts:45 #eman:43 #embl:32 #emel:56 #emen:35 #emin:-43 #emor:-28 #emos:137 #empe:67
#enag:-42 #ende:35 #ener:45 #enla:124 #enle:-86 #enme:76 #ensa:-36 #ense:30 #enta:-36 #ente:45 #enti:32 #entr:40
#eone:-33 #epro:77 #equi:39 #eran:-80 #erap:51 #erco:41 #erda:41 #erde:28 #eria:61 #erla:213 #ermi:-47 #erne:53
#erra:-32 #erro:55 #ersl:30 #erte:30 #erva:38 #esch:113 #esco:32 #escu:46 #esda:77 #eser:31 #esit:47 #esnt:90
#esor:27 #espe:-51 #espu:-44 #essa:34 #esta:40 #este:-31 #esto:-66 #etal:59 #ethi:49 #etra:30 #ette:54 #eval:130
#evam:40 #evan:-35 #even:54 #ever:-48 #eves:89 #eway:34 #exac:51 #exam:70 #eyre:28 #fabr:30 #falt:-106 #favo:60
#fech:171 #ffer:76 #ffir:-28 #ffle:92 #fici:38 #fier:85 #fije:30 #fine:-122 #firm:-61 #flig:41 #floo:38 #foco:-38
#foll:38 #fore:-64 #forg:40 #form:48 #forw:109 #free:-74 #fren:71 #frid:68 #frie:45 #from:-29 #fter:58 #fuer:47
#funn:48 #gado:35 #gala:70 #game:50 #gamo:41 #ganm:40 #gare:-61 #gati:80 #gato:-68 #gend:72 #gery:45 #givi:35
#gnme:-52 #goin:-58 #good:36 #grac:-42 #grad:69 #gram:77 #gros:30 #guie:28 #guys:42 #habi:70 #habr:98 #hace:82
#hada:29 #haga:28 #hanc:85 #hast:44 #have:29 #head:-69 #hear:-29 #heca:-58 #hech:-33 #heck:71 #heyr:28 #hija:36
#hing:57 #hizo:-55 #hola:-57 #home:-31 #hool:46 #hora:67 #hori:39 #hour:69 #hous:43 #hrew:52 #hrou:28 #hurr:39
#hurs:88 #hurt:30 #husb:50 #iaje:49 #iame:56 #iamo:48 #iarl:76 #iaro:-31 #iber:-58 #ible:55 #ibre:53 #icac:-27
#icil:40 #icit:54 #icos:49 #iday:70 #idew:35 #idge:-30 #idnt:28 #ieme:156 #iemp:-55 #ierc:41 #iere:-29 #iern:53
#iero:47 #ierr:44 #ific:29 #igam:29 #ight:67 #ignm:-52 #igui:73 #ijer:-35 #iled:27 #imon:-33 #impi:-29 #inal:36
#inch:65 #ines:31 #ingo:55 #insp:-44 #inst:40 #intm:48 #into:133 #inut:-49 #iqui:45 #iran:32 #irme:-39 #irve:29
#isit:37 #ismo:64 #isnt:53 #isse:49 #iste:30 #ital:52 #itar:72 #itas:80 #itch:51 #ithe:-45 #itin:-35 #itte:52
#iuda:52 #ivoq:52 #izad:27 #jaja:-49 #jale:-37 #jamo:47 #jero:-28 #jias:46 #jove:31 #juev:30 #juni:68 #junt:44
#jury:69 #keep:-31 #kick:50 #kidd:31 #kill:-27 #king:55 #ksgi:35 #labo:-68 #lace:33 #lade:50 #lado:-49 #lama:-42
#lamm:36 #land:62 #lann:29 #lant:139 #lari:30 #lcan:35 #ldnt:-27 #leak:31 #leas:32 #leav:30 #lect:48 #lept:30
#lets:138 #leva:-39 #lgui:-45 #libr:50 #lici:35 #lida:-34 #lide:118 #lien:-41 #lier:49 #ligh:64 #lign:-52 #like:49
#limp:-28 #line:-29 #liqu:47 #list:-38 #llam:-53 #lled:63 #ller:-42 #llev:-66 #llow:32 #llue:-30 #lock:96 #lome:35
#long:-43 #lood:36 #loud:47 #lowe:63 #lowi:49 #lqui:40 #lrig:27 #ltar:45 #lter:34 #luev:-30 #luga:67 #lumb:36
#lune:57 #mado:34 #make:137 #malo:76 #mana:53 #mane:69 #mano:-27 #mant:-48 #mbia:174 #mbie:157 #mbio:-168 #mbla:32
#mbre:-29 #medi:-38 #mejo:82 #mela:209 #melt:45 #meno:-38 #meon:-33 #mera:-27 #mess:34 #meta:59 #meth:49 #mine:86
#ming:93 #mins:-106 #minu:-49 #misa:-57 #mism:76 #mmed:36 #moda:39 #mond:78 #more:60 #morn:27 #morr:50 #mosl:62
#move:173 #mpez:72 #mpia:-28 #mple:32 #mpre:-40 #mpus:31 #muev:272 #mult:29 #myse:46 #nado:32 #nage:-50 #nail:-38
#name:-29 #nana:69 #nani:-51 #nced:35 #ncel:-99 #ncha:28 #nche:41 #ncho:65 #ndad:66 #ndam:52 #nday:38 #nded:37
#ndem:57 #ndid:45 #neci:61 #need:70 #nega:65 #neit:-51 #nemo:46 #nera:32 #nesd:45 #neta:29 #next:53 #ngam:35 #ngan:31
#nges:-31 #ngos:38 #nico:-59 #nine:58 #nino:-36 #nita:-51 #nksg:35 #nmen:-52 #nner:48 #noon:109 #norm:-34 #note:55
#noth:33 #noti:27 #nsfe:29 #nsig:30 #nspe:-44 #nste:63 #ntar:75 #nten:53 #ntil:-54 #ntme:48 #numb:-28 #nybo:48
#nymo:34 #nyth:56 #oads:76 #oble:36 #obro:27 #ocki:34 #octo:32 #odem:59 #odia:53 #odos:-30 #odre:-29 #odri:92
#odys:35 #oesn:90 #offe:43 #oger:-30 #ogra:77 #oing:-61 #oint:47 #okin:-42 #olan:31 #oles:48 #olic:35 #ollo:38
#olvi:-27 #omeo:-33 #omet:43 #omin:66 #omod:39 #omor:50 #ompl:51 #ompu:31 #onda:60 #onem:46 #oner:126 #onga:88
#onit:-37 #only:56 #onme:49 #onse:47 #onsi:30 #onte:29 #ooki:-41 #oone:73 #open:-35 #oque:33 #orar:37 #oras:-44
#orde:-37 #orge:-55 #orgo:106 #orit:33 #orni:28 #orra:186 #orre:-28 #orri:-39 #orro:50 #orte:51 #orwa:109 #osed:28
#oslo:30 #ospo:183 #ossi:40 #osto:-28 #otal:33 #otat:-34 #otem:55 #othe:97 #otic:30 #otra:-27 #oubl:66 #ould:178
#ound:-55 #ount:-29 #ours:-38 #ouse:44 #ouve:-34 #oven:31 #over:174 #owed:34 #ower:29 #owin:35 #paga:-30 #para:35
#part:41 #pasa:138 #pase:214 #past:-27 #pect:-40 #peda:43 #pedi:57 #pena:32 #peni:-40 #pere:-60 #pero:51 #pers:-34
#pezo:72 #pick:36 #piso:28 #plac:32 #play:-40 #plea:39 #plet:32 #pode:43 #podr:155 #poin:47 #ponc:28 #pone:151
#pong:81 #ponl:101 #ponm:49 #pose:27 #posi:36 #posp:183 #poss:81 #post:54 #pped:-32 #ppoi:48 #ppos:27 #pres:-35
#prog:77 #prop:77 #pued:160 #pull:-52 #punt:-58 #push:92 #pusi:46 #puso:66 #quar:-35 #quem:66 #quen:-40 #quer:46
#quid:48 #quie:33 #quit:-45 #quiv:51 #rade:109 #radu:77 #raff:48 #raig:61 #rain:65 #rait:57 #rama:77 #ranc:50
#rand:36 #rani:49 #rano:-42 #rara:-36 #rari:39 #rasa:95 #rath:111 #raye:37 #rcol:41 #rdad:42 #rday:75 #rden:-47
#reag:151 #reci:34 #reco:94 #rect:-80 #redo:87 #rely:45 #remi:-43 #rena:50 #repr:77 #resc:113 #resh:68 #rgan:76
#rger:44 #rget:-55 #rgot:106 #rica:30 #rico:49 #rida:91 #ride:32 #ridg:-30 #rien:27 #righ:-50 #rike:-41 #ring:-96
#rita:33 #rlie:72 #rmal:-34 #rmin:-31 #rnes:53 #rnin:27 #road:103 #rogr:77 #rong:33 #room:45 #ropi:77 #rops:28
#rota:-34 #roun:-49 #rral:67 #rram:31 #rrec:-80 #rrer:112 #rrie:-38 #rros:57 #rrow:50 #rsda:43 #rsle:30 #rter:-35
#rtes:54 #runn:27 #rwar:103 #saba:49 #sabe:-27 #sado:72 #sage:34 #said:43 #sala:69 #sale:41 #salg:-32 #sali:28
#same:142 #sari:-35 #sarm:39 #satu:78 #save:49 #sban:50 #scam:35 #sche:93 #scho:46 #scom:32 #scoo:79 #scuc:48
#sday:119 #seen:-34 #segu:62 #sela:106 #self:46 #selo:49 #sema:34 #seme:102 #senl:52 #sent:-30 #sfer:29 #sgiv:35
#shin:-39 #show:-43 #sibl:57 #siem:-40 #sier:79 #sigu:87 #simo:-42 #sing:-29 #sirv:29 #sito:47 #sitt:52 #sked:36
#slam:36 #slep:30 #slid:112 #slot:75 #soli:39 #solo:79 #soon:74 #spec:-43 #sper:-47 #spon:195 #spot:36 #spue:-44
#sque:46 #ssag:34 #ssed:40 #ssib:40 #stea:108 #stin:59 #stir:-46 #stop:-48 #stor:75 #stoy:-59 #stra:44 #stri:-56
#sueg:31 #suit:37 #sund:-40 #supp:41 #surg:98 #swap:93 #swit:66 #talk:-32 #tall:46 #tamb:-60 #tant:76 #tari:28
#tarl:33 #taro:101 #tati:-34 #tead:109 #teen:-44 #tela:27 #temb:31 #teme:78 #temp:80 #tene:44 #teng:31 #tenm:35
#tera:48 #term:-31 #ters:28 #tery:44 #test:29 #than:66 #that:93 #then:71 #ther:132 #thin:68 #thre:29 #thro:29
#thur:88 #tice:28 #tien:-40 #till:31 #time:76 #tire:-30 #tive:66 #tmen:48 #toca:51 #todo:-79 #tomo:50 #took:-35
#torm:45 #tory:38 #tota:33 #trad:131 #traf:46 #trai:90 #tras:120 #tres:45 #tric:48 #trik:-41 #tten:-27 #tter:150
#tual:-63 #tues:53 #turd:78 #turn:63 #uall:-46 #ualq:40 #uart:-57 #uble:66 #ucha:57 #udad:52 #ueda:-27 #uede:143
#uedo:32 #uegr:31 #uelt:59 #ueme:64 #ueri:46 #uesd:32 #ueva:111 #ueve:162 #ugar:67 #uide:50 #uido:59 #uier:36
#uite:-62 #uivo:51 #ujia:46 #uldn:-27 #uled:-34 #unad:32 #unas:84 #undo:-29 #unes:57 #unio:68 #unni:27 #unny:48
#unti:-53 #uppo:27 #urda:78 #urge:61 #urgi:53 #urns:69 #ursd:43 #usba:50 #usca:45 #usie:46 #usqu:66 #usta:28
#vala:130 #vale:-35 #vame:40 #vamo:-31 #vapo:37 #vean:-32 #vemo:-47 #verd:48 #verl:115 #viaj:45 #vida:-30 #visi:103
#vola:32 #voqu:33 #vuel:41 #wait:-73 #wapp:-27 #ward:103 #ways:35 #wedn:45 #week:115 #went:34 #were:-51 #what:47
#wife:-57 #wing:28 #witc:66 #work:115 #woul:75 #wron:33 #xact:51 #ybod:48 #yeah:49 #ymor:34 #your:30 #youv:-34
#ysel:46 #ythi:57 %again_later:149 %again_later%bad:47 %again_later%bring:-33 %again_later%busy:-50
%again_later%car:71 %again_later%car_part:44 %again_later%fails:75 %again_later%family:67 %again_later%gone_car:-78
%again_later%how_long:77 %again_later%message:-67 %again_later%money:-30 %again_later%noise:-33
%again_later%odometer:-43 %again_later%on_way:39 %again_later%opening:36 %again_later%pay_day:-38
%again_later%phone:109 %again_later%season:-49 %again_later%shift_it:98 %again_later%staff:-39 %agree:-51
%agree%away:43 %agree%bad:87 %agree%bring:54 %agree%busy:65 %agree%call_off:104 %agree%car_part:33 %agree%doubt:-57
%agree%elsewhere:-61 %agree%family:-27 %agree%gone_car:67 %agree%how_long:-33 %agree%meaning:30 %agree%message:-36
%agree%money:47 %agree%on_way:78 %agree%place:65 %agree%question:32 %agree%refuse:142 %agree%shift_it:85
%agree%staff:-74 %agree%start_again:-84 %agree%thanks:30 %agree%wrong_one:132 %away:71 %away%bring:46 %away%busy:52
%away%elsewhere:40 %away%fails:-65 %away%gone_car:-30 %away%odometer:47 %away%on_way:62 %away%place:91
%away%question:42 %away%refuse:-68 %away%shift_it:119 %away%wrong_one:60 %bad:86 %bad%bring:32 %bad%elsewhere:37
%bad%fails:37 %bad%how_long:52 %bad%meaning:44 %bad%pay_day:31 %bad%phone:31 %bad%place:39 %bad%question:-39
%bad%shift_it:44 %bad%start_again:37 %bring:-36 %bring%car_part:-44 %bring%do_it:115 %bring%elsewhere:42
%bring%fails:85 %bring%gone_car:58 %bring%how_long:59 %bring%leave_me:-53 %bring%lift:58 %bring%message:-30
%bring%money:64 %bring%opening:-31 %bring%pay_day:40 %bring%place:39 %bring%season:48 %bring%shift_it:117
%bring%staff:43 %bring%who:-28 %busy:128 %busy%do_it:60 %busy%doubt:-66 %busy%elsewhere:29 %busy%gone_car:36
%busy%leave_me:-28 %busy%on_way:-32 %busy%phone:29 %busy%place:-36 %busy%season:40 %busy%shift_it:33
%busy%wrong_one:29 %call_off%car:78 %call_off%car_part:63 %call_off%do_it:-58 %call_off%elsewhere:-49
%call_off%fails:58 %call_off%gone_car:-86 %call_off%how_long:50 %call_off%leave_me:38 %call_off%money:-94
%call_off%pay_day:35 %call_off%phone:-85 %call_off%place:105 %call_off%question:74 %call_off%refuse:-72
%call_off%season:-68 %call_off%shift_it:-67 %call_off%staff:70 %call_off%thanks:61 %call_off%wrong_one:-37
%car%do_it:62 %car%elsewhere:-61 %car%fails:46 %car%family:40 %car%gone_car:-51 %car%how_long:60 %car%leak:43
%car%odometer:115 %car%on_way:93 %car%question:-39 %car%refuse:60 %car%shift_it:-35 %car%staff:55 %car_part:-33
%car_part%do_it:-165 %car_part%doubt:-49 %car_part%fails:89 %car_part%family:28 %car_part%how_long:91
%car_part%money:-39 %car_part%odometer:46 %car_part%on_way:-38 %car_part%opening:33 %car_part%phone:36
%car_part%question:-64 %car_part%refuse:39 %car_part%shift_it:-35 %do_it:68 %do_it%doubt:-27 %do_it%family:69
%do_it%gone_car:-39 %do_it%pay_day:39 %do_it%question:-53 %do_it%shift_it:-35 %do_it%smoke_smell:46
%do_it%start_again:-38 %do_it%wrong_one:75 %doubt:-44 %doubt%elsewhere:-100 %doubt%fails:-43 %doubt%gone_car:-29
%doubt%message:-27 %doubt%on_way:-98 %doubt%phone:81 %doubt%place:-67 %doubt%question:74 %doubt%refuse:-37
%doubt%shift_it:-36 %doubt%wrong_one:-90 %elsewhere:47 %elsewhere%family:47 %elsewhere%gone_car:-56
%elsewhere%leave_me:-56 %elsewhere%money:-47 %elsewhere%odometer:-124 %elsewhere%on_way:-53 %elsewhere%phone:159
%elsewhere%place:-50 %elsewhere%question:56 %elsewhere%refuse:48 %elsewhere%staff:-37 %elsewhere%start_again:-63
%elsewhere%thanks:-30 %elsewhere%wrong_one:-78 %fails:49 %fails%gone_car:39 %fails%how_long:89 %fails%leave_me:-44
%fails%lift:44 %fails%money:28 %fails%noise:37 %fails%on_way:53 %fails%question:-51 %fails%shift_it:54
%fails%smoke_smell:-28 %fails%who:-34 %fails%wrong_one:-63 %family:54 %family%gone_car:37 %family%how_long:66
%family%phone:-58 %family%question:-30 %family%refuse:43 %family%who:43 %gone_car:80 %gone_car%how_long:88
%gone_car%on_way:-28 %gone_car%opening:31 %gone_car%question:48 %gone_car%season:-42 %gone_car%shift_it:-45
%how_long:104 %how_long%lift:-37 %how_long%meaning:59 %how_long%opening:-37 %how_long%pay_day:-36 %how_long%phone:55
%how_long%place:63 %how_long%refuse:38 %how_long%shift_it:134 %how_long%staff:41 %how_long%start_again:81
%how_long%who:40 %how_long%wrong_one:186 %leak:96 %leak%opening:49 %leak%question:45 %leak%shift_it:98 %leave_me:-45
%leave_me%money:49 %leave_me%refuse:84 %leave_me%smoke_smell:27 %leave_me%wrong_one:49 %lift%thanks:-31
%lift%wrong_one:-34 %meaning:30 %meaning%place:43 %meaning%start_again:36 %meaning%thanks:33 %message:-59
%message%shift_it:-48 %message%staff:39 %message%start_again:-34 %money%on_way:-67 %money%shift_it:31
%money%wrong_one:-30 %noise:52 %noise%refuse:27 %noise%shift_it:79 %odometer:174 %odometer%on_way:75
%odometer%place:59 %odometer%question:50 %odometer%refuse:43 %odometer%shift_it:63 %odometer%staff:55 %on_way:-94
%on_way%refuse:-42 %on_way%season:-46 %on_way%shift_it:58 %on_way%smoke_smell:28 %on_way%staff:-52
%on_way%wrong_one:-64 %opening:-45 %opening%refuse:112 %opening%shift_it:98 %opening%wrong_one:-61 %pay_day:46
%pay_day%season:48 %pay_day%shift_it:76 %phone:-34 %phone%question:52 %phone%refuse:72 %phone%start_again:-31
%phone%thanks:47 %phone%who:54 %phone%wrong_one:51 %place%staff:29 %place%start_again:37 %question:92
%question%smoke_smell:43 %question%start_again:-68 %question%wrong_one:48 %refuse:151 %season:83
%season%wrong_one:-32 %shift_it:416 %shift_it%smoke_smell:62 %shift_it%staff:36 %shift_it%start_again:128
%shift_it%who:36 %shift_it%wrong_one:91 %smoke_smell:51 %staff%start_again:-44 %staff%thanks:36 %staff%who:32
%staff%wrong_one:-73 %start_again:33 %thanks%who:47 %thanks%wrong_one:42 %who%wrong_one:46 %wrong_one:104 @?:192
@after_visit:-41 @confirm:491 @confirm_:-156 @confirm_eta:-58 @day:-83 @later:81 @nothing:416 @offers:-274
@reading:-29 @time:-236 @times:168 ^_$:-155 ^_a:-55 ^_actually:-91 ^_all:-38 ^_antes:-35 ^_any:32 ^_at:-58 ^_ay:-30
^_be:-75 ^_bien:-31 ^_borre:-58 ^_bring:85 ^_buenas:31 ^_can:37 ^_change:64 ^_correct:-28 ^_correcto:-27 ^_cost:-28
^_could:54 ^_cuanto:-69 ^_day:-28 ^_dead:37 ^_despues:-46 ^_did:-60 ^_disculpe:47 ^_do:-66 ^_el:-98 ^_en:55 ^_end:-34
^_ese:86 ^_eta:-59 ^_forget:-28 ^_forgot:30 ^_fri:-81 ^_fyi:-34 ^_got:-48 ^_gps:-64 ^_hableme:-35 ^_habra:98
^_have:76 ^_hay:89 ^_held:-36 ^_hey:41 ^_hola:-57 ^_hours:-74 ^_how:-91 ^_i:74 ^_it:-137 ^_kid:71 ^_la:32 ^_later:-56
^_les:-36 ^_lets:38 ^_llamenme:-32 ^_llego:-75 ^_lo:-49 ^_lol:-40 ^_lunes:-33 ^_make:160 ^_manana:57 ^_mande:-38
^_mas:51 ^_mejor:-37 ^_min:-27 ^_move:54 ^_my:80 ^_nadie:27 ^_necesito:77 ^_need:151 ^_negative:65 ^_nel:56
^_next:-42 ^_no:111 ^_nop:72 ^_nos:-46 ^_ocupo:54 ^_ok:-65 ^_on:-44 ^_para:-94 ^_pasela:43 ^_please:-39 ^_podria:52
^_pongame:-48 ^_por:-45 ^_puede:41 ^_pueden:38 ^_push:31 ^_que:59 ^_quite:-44 ^_reschedule:36 ^_sat:-34
^_saturday:-33 ^_school:27 ^_see:-59 ^_si:-214 ^_siempre:-28 ^_simon:-30 ^_sin:-27 ^_something:38 ^_sorry:27
^_still:-38 ^_switch:39 ^_tengo:77 ^_the:-29 ^_there:31 ^_this:-29 ^_tienen:-112 ^_tomorrow:41 ^_tomorrows:45
^_tuesday:-32 ^_turns:73 ^_ustedes:-27 ^_uy:37 ^_va:-66 ^_voy:-84 ^_want:77 ^_we:-104 ^_what:-152 ^_who:-50
^_will:-40 ^_wrong:-31 ^_y:-167 ^_ya:-61 ^_ye:-73 ^_yep:-54 ^_yes:-79 ^_you:-62 ^_your:30 a:152 a__a:66 a__but:31
a__de:-45 a__dia:-40 a__en:65 a__from:-59 a__hora:-27 a__manana:-48 a__me:-33 a__no:114 a__para:-87 a__phone:-36
a__por:67 a__si:78 a__tarde:66 a__time:27 a__to:-41 a__what:29 a__y:28 a_cambiar:-44 a_different:32 a_esa:115
a_hoy:62 a_ir:-80 a_la:54 a_las:119 a_manana:61 a_medio:-41 a_mediodia:36 a_mi:28 a_morning:39 a_new:98 a_otro:-76
a_poder:-36 a_que:-103 a_ride:-30 a_salir:37 a_saturday:51 a_tener:45 a_week:73 able:-49 able__make:-36 able_to:-49
about:90 about__at:80 about_it:48 about_my:-30 about_that:-29 about_tomorrow:-54 abren_$:50 acaban:33 aceite:-28
aceite_cuanto:-32 actually:-45 adelante:-44 adelante_$:-27 after:45 after__th:-27 after_all:40 after_lunch:37
after_my:-41 after_the:-54 after_tomorrow:-27 after_would:32 afternoon:39 afternoon_$:60 agenda:-56 ahi:-67
ahi__las:-44 ahi_a:-44 ahora__puedo:31 ahorita:-45 aire_$:-39 al:267 al__a:34 al__dia:-57 al__y:129 al_jueves:28
al_mes:31 al_otro:-76 al_sabado:90 al_viernes:51 alarm:36 alcanzo:44 alcanzo_a:-85 algo:58 alguien:-45 alignment:-52
all_$:41 all__for:-48 all__have:-36 all__my:-28 all_day:-32 all_good:-29 alright:27 alto:28 alto_$:32 amanecio:61
amanecio_sin:49 an__change:-51 an__later:41 an_alignment:-51 an_appointment:-72 an_hour:122 an_oil:-51 and:115
and__do:27 and__for:-29 and__i:-66 and__it:-57 and__me:122 and__text:51 and__the:54 and__will:36 and_do:37
and_early:-44 and_i:-55 and_no:-51 and_we:31 and_what:43 anoche:32 anoteme:55 another_day:53 antes_$:51
antes__favor:-50 antes__las:-30 antes__que:37 antes_de:-92 antes_del:-126 antes_no:33 antes_por:-50 any:213
any__but:52 any__next:-51 any__of:36 any__this:-32 any__to:64 any_chance:39 any_day:-88 any_more:32 any_way:87
anybody:48 anymore:34 anymore_$:-64 anything:56 anything_$:-50 anything__that:56 anything_else:47 aparte:31
appointment:48 appointment_$:-93 appointment__the:-39 appointment_for:-52 appointment_i:31 appointment_to:45
are_on:-27 around:-49 as:-56 asi:-43 asi_que:-30 ask:-33 ask_me:-30 asked:36 asked_for:36 at:53 at_$:34 at__be:47
at__my:-31 at__so:-57 at_instead:-41 at_now:-57 at_so:-28 at_the:35 at_work:42 at_would:52 atienden:-36 atras:-32
ay:-30 ayer:-29 back:38 back__hour:38 back_an:62 back_out:-37 bad:34 bail:-39 bateria:28 bateria_$:28 battery:44
be__at:-44 be__by:-27 be__for:46 be__late:-33 be__the:-38 be__to:34 be_a:36 be_able:-29 be_better:73 be_done:-28
be_late:32 be_the:36 be_there:-108 beat:45 bebe:-34 before:-49 best__to:47 better:54 bien_$:-52 bien_el:49 blew:34
bonito:-37 booking:-42 booking_$:-60 borre:-58 borre_mi:-58 boss:61 brake:44 brakes_$:-31 brakes__done:31
brakes_were:31 bright:-44 bright__early:-44 bright_and:-44 bring:-121 bring__in:-36 bring_it:-31 buenas:31 bujias:46
bump:38 bus:42 busqueme:66 but:47 but__one:49 but__would:-44 but_friday:-59 but_the:61 by:-48 by_a:49 bye:-41 c:-192
call:-46 call__and:30 call__cell:32 call__thursday:-38 call_me:-31 call_my:33 call_off:-38 called:29 called_in:-32
calling:28 cambia:46 cambiar_$:-44 cambiar__cita:30 cambiar__el:38 cambiar_el:-61 cambiar_la:41 cambiar_mi:31
cambiar_para:38 cambiarla:76 cambiaron:-31 cambiaron_el:44 cambie:-85 cambieme:90 cambieme_la:35 cambiemela:35
cambio:-90 cambio__aceite:-43 cambios:-78 came:112 came_on:44 came_up:29 campo:-38 can:298 can__be:71 can__bring:-72
can__do:41 can__drop:50 can__friday:-49 can__have:79 can__make:33 can__move:30 can__phone:33 can__stop:-44 can_do:-62
can_i:91 can_it:91 can_somebody:33 can_we:168 can_you:111 cancel:-99 cancel_$:-40 cancel__appointment:-47
cancel_me:43 cancel_tomorrow:-62 cancelar_la:-30 cancele__de:43 cancele__favor:-59 cancele_lo:47 cancele_por:-59
cant:39 cant__it:-167 cant_do:112 car:-44 carro:-44 carro_el:-43 carro_lo:31 carros:46 casi:64 casi_no:76 cell:33
cell_$:32 chance:85 chance_of:36 change:32 change_$:-119 change__appointment:32 change__to:52 change_it:182
change_my:34 changed_$:-31 changes:-30 checar:-40 cita:-38 cita_$:-55 cita__el:-149 cita__favor:64 cita__jueves:-68
cita__manana:30 cita_de:-50 cita_del:-47 cita_para:-120 cita_por:64 click:29 clock:82 cobro:27 come:53
come__friday:-144 come__on:52 come_at:104 come_in:-71 come_monday:30 come_tomorrow:38 coming_$:-33 como:-43
como__las:-31 como_a:-37 con:86 con__el:32 con__ninos:-55 con_el:43 con_fierro:34 con_la:48 con_los:-57 correct:-53
correcto:-27 corte:51 cost_and:-29 costo:-28 could:112 could__a:-46 could__come:45 could__do:71 could__the:-52
could_do:-52 could_i:36 could_it:43 could_we:110 cual_$:-39 cualquiera:56 cualquiera_$:55 cuanto__de:28
cuanto__tarda:-32 cuanto__tardan:28 cuanto_dura:38 cuanto_era:36 cuanto_se:-27 cuide:50 cunado:32 da:39 dad:38
dame:28 date:107 date_$:-44 daughters:28 day:197 day_$:-64 day_for:41 day_is:-27 day_next:-32 day_please:71 days:51
de:98 de__agenda:-56 de__bateria:28 de__cita:-75 de__cuando:31 de__en:64 de__escuela:43 de__hija:56 de__hora:-43
de__mas:27 de__me:28 de__no:-40 de__otra:-74 de__para:44 de__por:49 de__que:90 de__se:-42 de__si:33 de__y:36
de__yo:53 de_a:-46 de_aceite:-42 de_dia:93 de_la:-120 de_lo:61 de_manana:37 de_mi:73 de_semana:-33 de_thanksgiving:35
de_una:-28 de_viaje:42 dead:37 dear:30 dejamos:47 dejamos_para:47 dejarlo:-32 dejo:-30 del:75 del__de:-61
del__por:-27 del__y:54 del_dia:-34 deme:62 deme_el:33 denme:29 descompuso:34 despues:-44 despues_$:-48
despues__la:-39 despues__las:-39 despues_de:-57 despues_del:65 dia:266 dia_$:-65 dia__de:-40 dia__la:-28 dia__las:-29
dia_a:-29 dia_de:-59 dia_no:93 dia_pero:32 dia_que:35 dias:118 dias_$:114 dice:35 did:-34 did__move:-60
did__myself:-28 did__oil:39 did_it:-36 did_the:61 did_you:-59 didnt:28 different_day:39 digame:29 digame_cuanto:32
diganme:28 digo:-41 dije:38 dijeron:-28 dijeron_una:-28 dime:43 dime_el:44 disculpe_$:-29 do:164 do_$:52 do__and:95
do__at:89 do__but:33 do__day:43 do__do:47 do__for:42 do__guys:31 do__need:-51 do_any:83 do_i:-88 do_instead:-74
do_it:-51 do_me:28 do_this:45 do_tuesday:31 do_you:65 doble:57 doctor:36 does_that:-31 doesnt:90 doesnt__anymore:91
doesnt_work:58 domingo_$:30 domingo_o:61 domingos:38 domingos_$:38 donde:-39 donde_mero:-29 done__a:30 done_by:30
dont:-88 dont__me:49 dont__that:42 dont__the:-30 dont__to:-51 dont_need:-70 dont_want:-53 dos:69 dos_dias:80
double:66 down:73 down__road:50 down_the:96 drive__to:-38 drive_me:-27 drop__off:48 drops:28 dura:29 earlier:52
earlier_$:-28 earlier_than:-34 earlier_the:-31 early:37 early_$:-44 early_for:40 either_$:38 el:135 el_$:67 el__a:-91
el__bien:31 el__como:-46 el__cuanto:-35 el__despues:-41 el__entonces:53 el__es:-57 el__ese:-46 el__esta:35
el__jueves:78 el__llego:-29 el__lo:31 el__los:30 el__no:33 el__o:65 el__para:-55 el__pero:-31 el__que:77
el__temprano:-110 el__tipo:-32 el__y:43 el_aceite:-33 el_aire:-32 el_alto:32 el_costo:44 el_del:50 el_doctor:48
el_fin:-27 el_jale:-29 el_lunes:31 el_otro:-56 el_pedal:34 el_piso:31 el_que:-31 el_servicio:-28 el_turno:43
el_viernes:67 el_volante:32 eleven:32 eleven_$:31 else:107 empezo:72 empezo_a:72 en:43 en__de:62 en__del:169
en__mananita:-51 en_el:-88 en_las:31 en_lugar:138 en_pie:-68 en_un:31 en_vez:93 end:-33 end_$:-34 entra:38 entro_$:35
equivoque:52 equivoque_de:56 er:27 era:45 era_el:47 es:-66 es__amable:31 es__cita:-45 es__ya:29 es_la:70 es_malo:31
es_mi:-50 es_para:-38 es_que:67 es_rapido:-32 es_tan:31 esa:100 esa_hora:126 escuela_$:48 ese:92 ese__no:30
ese_dia:100 espacio:-38 espacio_$:35 espacio_el:-29 espere:-38 esta:103 esta__y:29 esta_muy:33 esta_saliendo:-28
este:-28 estoy:-59 estoy_ahi:-51 eta:-59 eta_$:-58 even:31 every_day:29 fabrica:30 falta:-48 favor:60 favor_$:52
favor__no:-28 favor_el:-30 favor_no:31 favor_que:63 fecha:171 fecha_$:78 fell:40 fell_through:44 fierro:65
fierro_$:34 fierro__fierro:34 fierro_con:34 fin:-46 fin__semana:-33 fin_de:-40 final:36 fine:-122 fine_$:-110
flight:41 foco:-38 following:49 for__at:38 for__th:-28 for__what:59 for_an:-60 for_that:53 for_thursday:-66
for_tomorrow:-42 forget:-55 forget_about:-27 forgot:106 forward:109 free:-64 frena:52 frena_$:42 frenos:33 fri_$:45
fri_pm:29 friday:53 friday__how:-35 friday__my:27 friday__the:54 friday__work:-60 friday__would:-31 friday_and:28
friday_instead:32 friday_would:-58 fridays:38 friend:31 from:-29 from_$:50 from_home:-37 fue:-39 fue_la:-35 fuerte:30
funny:48 get__to:-40 get__work:36 get_my:-28 get_off:38 get_there:52 give:27 give_me:66 go:-65 go_$:-44 going:-58
going__have:-39 going__make:-39 going_to:-87 good:36 good_$:-31 good__the:30 good_but:32 good_for:-72 got:128
got_$:116 got__cancel:-39 got__on:33 got_anything:65 got_changed:31 got_it:-131 got_to:-64 gps:-72 gustaria:28 guy:65
guy__me:52 guys:42 guys_take:34 habia:42 hablar:-31 hableme_y:47 habra:99 hacerlo:35 had:-29 half__hour:46 half_an:46
half_the:-27 has_to:33 hasta:44 hasta_las:61 have:30 have__bail:-39 have__cancel:-37 have__phone:34 have__pick:46
have__this:-47 have_a:72 have_me:-45 have_the:-40 have_you:39 hay:68 hay_$:37 hay__que:-33 heading:-31 hecho:-34
hecho_$:-27 held__at:-32 her:-28 here_$:-31 hey:41 hey_it:28 hi_$:-41 hija:36 hit:-44 hizo:-55 hizo_tarde:-55
hola:-57 hora:64 hora_$:49 hora__a:46 hora__para:-53 hora__y:-39 hora_abren:34 hora_no:-32 hora_y:31 horario:39
horas:-44 hour:87 hour_$:36 hour_later:41 hours__it:41 hours_is:41 house:44 how:103 how__for:-34 how__is:37
how_about:173 how_is:41 how_late:30 how_long:-50 hoy:170 hoy__de:-62 hoy__manana:49 hoy_despues:-61 hoy_manana:39
hoy_por:57 huh:-112 huh_$:-112 hurt:30 i__a:116 i__at:104 i__be:-48 i__by:-27 i__days:46 i__do:71 i__for:81
i__friday:43 i__get:42 i__i:31 i__in:-91 i__like:51 i__make:-38 i__my:38 i__to:-87 i__tomorrow:43 i__want:-64
i__you:-35 i_asked:36 i_be:-60 i_bring:-97 i_can:-31 i_cant:44 i_come:27 i_could:-32 i_did:-27 i_dont:-72 i_drop:51
i_forgot:40 i_get:-36 i_got:-36 i_have:104 i_moved:-34 i_need:-117 i_put:48 i_stop:-44 i_would:40 ice:46 id:105
id__to:35 id_rather:50 if:204 if_possible:39 if_so:49 ill:-46 ill_have:-28 im_off:33 in:-37 in_$:-67 in__is:46
in__of:86 in__week:-57 in_a:-39 in_friday:-140 in_it:37 in_on:40 in_the:66 in_today:51 inspection:-29 instead:63
instead_$:-32 into:74 ir:-110 ir_$:-116 ir__a:44 ir_mi:-46 ire:-27 is:88 is_$:-68 is__at:-50 is__best:47 is__early:40
is__for:-30 is__going:-44 is__my:55 is__open:34 is__the:68 is__too:33 is_a:-88 is_about:46 is_coming:42 is_good:28
is_leaking:31 is_not:27 is_out:78 is_perfect:-55 is_that:41 is_there:39 is_this:-42 is_too:40 ish:38 ish_$:56 isnt:53
it:107 it_$:-91 it__a:-75 it__an:27 it__be:33 it__done:-27 it__fine:-73 it__how:85 it__i:49 it__it:44 it__like:37
it__morning:-43 it__the:84 it__time:-36 it__to:62 it__week:43 it__you:-31 it_a:32 it_after:45 it_anymore:-94
it_be:148 it_cost:28 it_down:39 it_in:-83 it_isnt:82 it_off:52 it_on:-58 it_that:-39 it_to:73 it_tomorrow:-27
it_up:31 jaja:-45 jaja_$:-46 jale:-37 joven:31 jueves:31 jueves_$:-92 jueves__el:115 jueves__la:-43 jueves__las:-57
jueves__lo:50 jueves__viernes:-36 jueves_a:-54 jueves_en:-29 jueves_o:-31 jueves_si:72 jueves_y:74 junio:68
junio_$:68 jury:69 just:-37 just__it:-30 k:-38 keep:-32 kid:67 kill:-27 la:210 la__a:40 la__al:77 la__antes:-42
la__de:-30 la__del:-28 la__dos:63 la__el:-46 la__en:28 la__hoy:41 la__jueves:-29 la__la:-60 la__mas:78 la__para:68
la__pasada:-31 la__pasar:40 la__se:-36 la__ya:49 la_agenda:-56 la_bateria:28 la_calle:-40 la_cambia:37 la_cita:65
la_ciudad:34 la_de:87 la_fabrica:30 la_manana:37 la_mananita:-51 la_mia:39 la_otra:-57 la_quiero:96 la_tarde:82
la_vez:-30 labor:-68 labor_day:-68 lado:-44 las:120 las_$:-33 las__bien:-36 las__las:84 las__llego:46 las__lo:53
las__no:52 las__puede:-30 las__salgo:-32 las_a:82 las_en:59 las_no:86 las_por:53 las_que:-31 las_si:46 las_y:46
late__you:30 late_afternoon:27 le:-130 le__de:35 le__saliendo:-28 le_esta:-28 le_toca:-42 le_van:-44 leaking:31
leave__the:30 les:-57 let:51 let_it:55 lets:148 lets__it:65 lets_do:69 libre:70 libre_$:97 libre_el:-27 light:36
light__on:44 light_came:44 like:79 like_$:33 like_to:34 liquido:48 liquido_$:31 llamar:-41 llamenme_antes:-65
llamenme_para:49 llegar:37 llegar_$:-31 llegar_a:40 llegare:-53 llego__las:28 llego_a:30 llego_en:-66 llevar:-27
llevar_$:27 llevar__carro:-31 llevar__mi:28 llevar_el:-39 llevar_la:-28 llevarla:-36 lo:-79 lo__jueves:38 lo__le:-40
lo__para:44 lo__yo:30 lo_de:-30 lo_dejamos:45 lo_del:103 lo_puede:38 lo_quiero:-33 lo_tengo:29 lo_trae:30
lo_traigo:-31 loaner_$:30 lol__me:38 long:-61 long__the:29 long_is:37 look_like:29 los__me:36 lugar:67 lugar_de:91
lunch_$:39 lunes:57 lunes_$:107 lunes__a:-30 lunes__las:-41 lunes__martes:-36 lunes_de:50 lunes_despues:-32
lunes_en:-60 lunes_no:-33 make:138 make__the:59 make_it:-37 mal:48 malo:78 malo_$:31 manana:69 manana_$:-130
manana__el:74 manana__la:-35 manana__me:44 manana_no:75 manana_pero:51 manana_si:58 manana_temprano:-36 manana_y:40
mananita:-51 mandado:31 mande:-38 mande_$:-38 martes_$:-32 martes__el:37 martes__la:52 martes_y:67 mas:286 mas_$:-147
mas__el:47 mas__ese:65 mas_tarde:223 mas_temprano:91 me:169 me_$:-78 me__al:-31 me__algo:32 me__an:37 me__cambia:32
me__cambiar:29 me__can:32 me__de:47 me__el:-109 me__it:37 me__llamar:-41 me__los:35 me__mejor:-57 me__of:-27
me__otra:36 me__para:28 me__puede:28 me__que:-41 me__tarde:-56 me__the:31 me__thursday:38 me__tomorrow:-55 me__un:-27
me__y:50 me__ya:43 me__yo:-30 me_about:-49 me_after:-29 me_again:-29 me_and:83 me_back:49 me_cambiaron:29 me_da:39
me_descompuso:34 me_dijeron:-28 me_down:49 me_equivoque:52 me_esta:44 me_friday:44 me_fue:-36 me_gustaria:28
me_hace:46 me_hizo:-56 me_how:-30 me_la:70 me_next:27 me_now:40 me_off:-67 me_olvida:-27 me_on:68 me_out:-52
me_puede:-88 me_pueden:-71 me_sale:41 me_salio:63 me_sirve:29 me_there:-30 me_to:62 me_with:30 medio:-40
medio_dia:-40 mejor:82 mejor__lunes:28 mejor_la:-32 mejor_no:-33 mejor_que:-43 menos:-38 menos__lunes:-31
menos_el:-31 mero:-36 mes:31 mes_$:38 messages:35 metal:59 metal_$:41 metal__metal:27 mi:90 mi__a:-91 mi__al:47
mi__con:32 mi__de:-64 mi__del:-58 mi__el:70 mi__la:39 mi__no:36 mi__para:85 mi__por:42 mi__y:-37 mi_cita:85
mi_cunado:32 mi_hija:36 mi_hora:-40 mi_lugar:-87 mi_senora:41 mia:40 miercoles:41 miercoles_$:37 miercoles_y:44
min:-92 mine:117 mins:-106 mis:41 misa:-57 mismo:64 mismo__pero:47 mismo_dia:41 miss:-42 missed:49 mnn:27 mon:52
mon_at:95 monday:109 monday_$:40 monday__be:-38 monday__th:-50 monday_after:58 monday_morning:47 monday_or:-33
monday_please:36 monday_so:40 monday_the:-50 monday_would:42 mondays:-32 morning_and:41 morning_for:49 mornings:49
move:40 move__to:39 move__up:88 move_me:133 mover:45 moverla:121 muevala:130 mueve:61 my:48 my__and:95
my__appointment:45 my__back:27 my__did:39 my__drop:-42 my__fell:47 my__gets:27 my__got:31 my__in:-36 my__said:41
my__to:31 my__will:-36 my_appointment:48 my_boss:31 my_car:-34 my_cell:33 my_dad:39 my_morning:50 my_name:-29
my_oil:31 my_ride:51 my_shift:-50 my_sister:29 my_son:-35 my_tuesday:65 my_whole:29 my_wife:-52 myself:46 nada_$:-62
nada_mas:45 nail:-38 name:-29 nd:27 necesito:47 necesito__para:-66 necesito_que:-53 need:31 need__appointment:-99
need__bring:-45 need__cancel:-68 need__day:47 need__later:28 need__ride:-29 need__the:-28 need_a:39 need_an:-69
need_another:47 need_for:-28 need_to:31 needs:53 needs_it:-34 negative:65 negative_$:65 neither:-51 nel:56 nel_$:56
new:130 next:53 next__any:-45 next__please:33 next__the:-37 next_friday:42 next_wk:-29 ni:-39 nine_$:-33 nino:-40
ninos_$:-60 no:74 no_$:238 no__but:32 no__cancele:60 no__carro:30 no__de:-33 no__dia:62 no__do:-67 no__dont:-51
no__el:133 no__en:27 no__esta:39 no__for:-28 no__here:-28 no__hoy:69 no__ir:-103 no__la:-42 no__llegar:-60
no__manana:55 no__me:-36 no__nada:-48 no__now:87 no__otra:-29 no__otro:-29 no__por:27 no__que:46 no__quien:46
no__sirve:33 no__tengo:-42 no__than:-79 no__va:47 no_alcanzo:44 no_can:-64 no_earlier:-44 no_frena:52 no_good:112
no_hay:-58 no_ire:-27 no_it:82 no_llego:84 no_manana:45 no_mejor:49 no_mi:30 no_no:-40 no_podre:-29 no_puedo:-53
no_salgo:33 no_se:-58 no_show:-43 no_traigo:56 no_va:-35 no_vamos:-27 no_voy:-39 noon:89 nop:72 nop_$:72 normal:-34
nos:-30 nos__manana:-41 nos_vemos:-46 not:50 not_$:46 not__a:29 not__one:37 not__to:-31 not_at:57 not_coming:-80
not_the:37 not_tomorrow:63 notice:30 now:121 now_$:-30 now_so:-57 now_that:31 number:-28 number_$:-27 o_clock:61
o_es:36 o_no:28 o_viernes:-31 ocupo__para:-58 of:97 of__day:32 of__do:34 of_me:-38 of_my:60 of_next:-33 off:-28
off_$:-35 off__on:37 off__so:45 off_so:-29 off_thursday:-38 off_work:37 oil:-35 oil_$:39 oil_change:-60 ok:-39
ok_for:-31 olvida:-27 on_$:-50 on__th:132 on_friday:-31 one:100 one_$:46 one_i:78 one_of:-27 only:56 only__me:49
opens:29 or:-28 or__th:36 orden:-30 orden_$:-30 other:101 otra:-27 otra__me:-47 otra_fecha:105 otra_persona:-27
otra_vez:-104 otro_$:-91 otro_dia:124 out_$:48 out__me:-28 out_by:32 out_of:-43 overslept:30 oye:43 para:103
para__de:32 para__del:59 para__lunes:39 para__no:-28 para__otra:80 para__sabado:55 para__si:58 para__viernes:-66
para_despues:99 para_el:165 para_la:-76 para_manana:58 para_que:-36 para_un:-33 para_ver:69 pasada:-31 pasado:103
pasado_$:52 pasar:-84 pasar__el:-38 pasar__las:36 pasar_al:39 pasela:113 pasela_al:29 paseme:43 pedals:29 pena:39
pero:32 pero_el:46 phone__about:-30 phone__with:31 phone_my:-38 pick:36 pie:-74 pie_$:-60 piso:31 place:33 plan:-55
plan_$:-50 please:39 please_$:84 please__me:-31 please_take:-35 pm:88 pm_and:43 podemos:59 podemos__para:42 podre:-29
podre_ir:-35 podria:57 ponchada:29 ponme:49 ponme_el:51 por:-37 por__calle:35 por__del:53 por__el:-31 por__me:-39
por__no:30 por_cual:34 por_el:-49 por_favor:36 por_la:-41 por_lo:53 por_otro:-36 posible:36 possible:34 preguntar:28
preguntar_$:28 primer:45 primera:-27 puede:59 puede_$:-126 puede__la:39 puede__para:-38 puede__viernes:41 puede_el:79
puede_ir:-46 puede_llevar:-46 puede_ser:66 pueden:-43 pueden__a:-41 pueden__de:39 pueden__el:-40 puedo:47 puedo__a:76
puedo__el:54 puedo__hoy:-112 puedo__la:-28 puedo__las:50 puedo__martes:48 puedo__mi:55 puedo_ir:64 puedo_llegar:80
puedo_manana:31 puedo_pasar:-54 pull:-36 pull_my:-28 push:84 push__back:61 push_me:40 pusieron:49 puso:32 put:160
put__off:29 put__on:70 put_in:-27 put_it:28 put_me:114 put_the:41 quarter:-35 que:56 que_$:-59 que__a:-41
que__abren:35 que__con:33 que__de:-38 que__despues:49 que__el:115 que__jueves:-37 que__la:48 que__lo:-63 que__me:-62
que__no:29 que__si:39 que_cambiarla:78 que_dia:-54 que_entra:38 que_es:-58 que_hora:-84 que_la:-38 que_le:-35
que_llevar:38 que_pena:39 que_salgo:-30 que_sea:91 que_sigue:32 que_tal:73 que_ya:38 quedamos_$:-44 quede:27
queria:47 quiero__cita:-37 quiero__el:-39 quite:-45 quite__cita:-44 raite:57 ran:34 ran_over:34 rapido:-32
rapido_$:-32 rather:111 rather_than:60 read:36 ready:-42 ready_$:-40 recital:59 red:58 red_$:69 remind:-44
remind_me:-44 reschedule:71 reschedule_please:30 ride:32 ride_to:-39 right:-33 ring_$:27 ring_me:-27 road:27 roads:76
roads_are:76 room:33 rotation:-34 running:27 sabado:45 sabado_en:34 sabado_temprano:-51 sabado_y:35 said:43
said_no:42 sale:51 sale_un:31 salgo:-32 salgo_$:-48 salgo_de:89 saliendo:-27 salio_un:35 salio_una:36 salir:49
salir_$:30 same:104 same_time:92 sat:43 sat_$:40 sat_morning:-35 saturday:92 saturday_$:79 save:49 say:-42 say_$:-53
says_$:-39 school:46 school_bus:53 se:55 se__antes:54 se__descompuso:34 se__el:63 se__fue:-36 se__hace:44
se__hizo:-56 se__no:-29 se__olvida:-27 se__un:29 se__y:37 se_cambiaron:-45 se_los:30 se_me:73 se_oye:27 se_puede:46
se_si:-37 se_tarda:-35 sea:81 sea_$:-36 sea_el:45 see:-114 see__thursday:-41 see_you:-81 seen:-34 semana:43
semana_$:62 semana__entra:36 semana__viene:-27 semana_que:43 ser:54 ser_$:-79 ser_el:-38 ser_mas:64 shift_$:-32
shift__to:30 should_be:36 show:-43 si:91 si__a:-49 si__ahi:-28 si__no:-30 si__puede:63 si__quiero:-33 si__tan:31
si__voy:37 si_el:-43 si_es:49 si_la:28 si_lo:-33 si_me:43 si_puedo:35 si_se:55 si_y:-37 siempre:-40 siempre_no:-33
sigue_$:33 siguiente:55 simon:-30 sin_aire:49 sin_falta:-36 sirve:29 sister:29 sitter:55 slammed:36 slide:118
slide_me:67 slot:75 slot_$:46 so__can:-29 so__i:-60 so__is:-61 so__would:38 so__you:42 so_monday:42 so_yes:-29
solo:79 solo_$:31 some:-27 somebody_phone:29 someone:-33 something:49 something__up:29 something_came:29 son:-59
sooner:74 sooner_than:56 sorry_$:-32 spring_$:27 st_$:29 still__the:42 still_good:-31 stop:-43 stop_by:-45 storm:45
story:48 straight:45 strike:-41 su:-34 suit:32 sunday:-38 sunday_so:-31 supposed:27 supposed_to:27 surgery:45
swap:120 swap__to:42 swap_me:57 swapped:-27 switch:74 switch_me:28 switch_to:28 take__off:-55 take_me:-75 take_to:27
tal:-27 talk:-27 taller:-42 tambien:-60 tan:72 tan_amable:31 tan_malo:31 tantito:32 tantito_$:40 tanto:44 tarda:-35
tarda_$:-32 tardan_mas:-28 tarde:66 tarde__me:27 tarde_el:-33 tarde_y:68 tardecito:31 tardecito_$:39 tardo:-31
temp:70 temp_light:45 tempranito:49 temprano:-34 temprano_$:-103 temprano_a:62 tener:45 tener_que:45 tengo:81
tengo__de:33 tengo__llevar:38 tengo__se:60 tengo_que:34 terapia:51 th:70 th__it:52 th__the:57 th_i:-28 th_is:54
th_or:50 than:62 thanks:-38 thanks_for:-33 thanksgiving:35 thanksgiving_$:35 that:92 that__i:33 that__on:32
that__the:-46 that_appointment:28 that_day:55 that_is:-92 that_time:69 the:130 the__after:92 the__appointment:-43
the__at:-30 the__change:30 the__dont:30 the__is:62 the__now:-39 the__of:83 the__on:39 the__or:56 the__person:42
the__says:51 the__so:33 the__the:-70 the__thing:-51 the__till:29 the__week:30 the__what:30 the__will:29
the_appointment:-31 the_better:-89 the_brake:48 the_day:72 the_earlier:-68 the_engine:28 the_following:54
the_house:31 the_last:34 the_morning:-27 the_oil:86 the_one:75 the_other:-44 the_road:38 the_same:64 the_text:51
the_th:77 the_thing:39 the_time:-34 the_visit:35 the_wrong:75 then:71 there__a:30 there_at:-37 there_by:-36 theyre:28
thing_$:-40 thing__the:51 thing_on:53 things:-33 this__me:-30 this_for:30 this_is:-37 threw:52 threw_up:52 through:28
thurs:46 thurs_$:77 thurs_after:-73 thursday_$:-119 thursday__be:42 thursday__i:-34 thursday_and:71 thursday_at:-98
thursday_friday:27 thursday_would:42 thursdays:28 tienen_$:85 tienen__para:-46 tienen_lugar:-32 til:103 till:52
time:102 time_$:86 time__i:-58 time__me:35 time__week:39 time_next:-30 time_you:36 tirando:32 tmrw_$:-27 to:264
to__a:42 to__and:31 to__anything:-44 to__how:30 to__if:28 to__in:29 to__it:53 to__my:-56 to__off:-46 to__out:-73
to__over:-27 to__please:57 to__th:69 to__this:75 to__up:-33 to__week:36 to_back:-37 to_bail:-39 to_bring:-35
to_cancel:-143 to_change:141 to_come:39 to_drive:-32 to_friday:99 to_get:-46 to_have:-46 to_make:-112 to_monday:32
to_next:67 to_pick:46 to_somebody:-31 to_the:90 to_turn:-28 toca:51 today:37 today_$:-58 today_instead:48 todays:-46
todo:-50 todo_$:-27 todos:-30 told_me:34 tomorrow:64 tomorrow_$:-102 tomorrow__do:33 tomorrow__is:34
tomorrow_after:-37 tomorrow_is:39 tomorrow_please:-53 too:95 too__for:66 too_early:72 took:-35 top:54 total:-35
town:29 trabajo_doble:43 trabajo_hasta:-34 trade:140 tres:45 tres_dias:56 troca_ya:44 truck_is:28 try:83 try_again:43
tuesday:33 tuesday__th:-28 tuesday_and:100 tuesday_morning:-28 tuesday_so:38 tuesday_the:-50 turn:-40 turn_over:-27
turns:69 turns_out:69 two:-39 ultima__me:27 un:84 un__antes:102 un__el:-32 un__mas:57 un_dia:147 un_foco:-27
una__a:37 una__para:-51 una__y:-36 una_cita:-72 una_llanta:41 una_semana:43 unas:84 undo:-27 until:-53 up:87 up_$:-54
up__to:-50 up_at:40 up_the:66 usa:30 use:-29 uy:37 va_a:-66 vale:-35 vamos:-31 vamos_$:-28 van:32 van__cambiar:-44
van_a:-58 vapor:37 vean:-32 vemos:-47 vemos_manana:-41 ver:43 ver_el:-27 verdad:48 vez:-44 vez_$:28 vez_pasada:-30
viaje:49 viaje_el:48 viene_el:32 viernes:53 viernes__las:-61 viernes_a:-42 viernes_en:52 viernes_que:39 visit:36
volante:32 voy:-82 voy__estar:41 voy__tener:45 voy_el:37 vuelta:32 vuelta_a:36 wait:-29 wait_$:-43 wait_for:-32
wait_til:44 waiting:-35 want_that:30 way:81 way_to:63 we:213 we__instead:-72 we__it:75 we__to:-31 we_are:-40
we_have:-36 we_make:41 we_will:31 wed:-51 wednesday:60 wednesday_$:97 wednesday__th:-73 wednesday_the:-73 week:131
week_$:29 week_after:93 week_from:-59 week_it:29 week_please:32 went:33 were:-51 were_done:31 were_fine:-73 what:47
what__is:-41 what_about:78 what_does:29 what_else:84 what_is:-50 what_time:-69 when_the:34 who:-31 who__the:47
who__this:-33 wife:-57 will__be:-43 will__it:-36 will_bring:-36 with_my:45 wk:-30 wont__it:-77 wont__there:31
wont_be:-57 wont_work:62 work:112 work_$:-82 work_on:37 would:97 would__better:73 would__have:-63 would__to:46
would_be:73 would_i:-33 would_it:48 would_like:51 would_you:-38 wrong:33 wrong_$:-50 y:108 y_$:-155 y__cuanto:86
y__de:40 y__el:99 y__en:-33 y__la:29 y__no:-41 y__que:-54 y__se:30 y_cuanto:40 y_digame:35 y_el:-27 y_lo:44 y_mi:31
y_puedo:49 y_si:37 y_ya:27 ya_$:-61 ya__cambiaron:-29 ya__la:34 ya__los:33 ya__mil:-42 ya__no:27 ya_casi:37 ya_se:36
ya_van:31 ye:-73 yeah:49 yep:-53 yep_$:-28 yes:-120 yes_$:-34 yo:48 yo_$:31 yo__el:92 you:-58 you_$:-51 you__at:-39
you__it:50 you__my:-72 you__take:32 you__tomorrow:47 you_are:-39 you_do:55 you_guys:44 you_have:-30 you_kindly:30
you_move:-30 you_open:31 your_guy:51 youve:-34 youve__me:-31
"""
