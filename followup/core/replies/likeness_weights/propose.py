"""What speaks for and against `propose`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "propose"
BIAS = -208
WEIGHTS = """\
#abad:114 #able:90 #abou:109 #abra:84 #abre:-66 #abro:-82 #acio:75 #acom:49 #acro:77 #acto:-56 #actu:-46 #acue:-50
#ados:-90 #adra:73 #adre:63 #adua:-59 #aero:-58 #afte:101 #agan:64 #agos:55 #ahea:57 #aila:51 #ajaj:-48 #ajan:-135
#ajes:58 #aldr:-55 #ales:-76 #algo:131 #alie:98 #alin:46 #alle:61 #alqu:109 #also:91 #amac:56 #amad:-77 #amal:-78
#amar:57 #ambi:-64 #amen:51 #ampo:83 #anan:73 #ance:-108 #anda:51 #andi:57 #ando:66 #ange:-119 #anme:-69 #anne:-50
#anos:74 #anso:55 #anta:-67 #ante:63 #anyt:191 #anyw:76 #apri:44 #aqui:84 #arat:-58 #arca:-66 #ario:-71 #arla:51
#arle:-50 #arli:107 #arly:73 #arou:77 #arro:46 #arte:68 #arzo:-101 #asad:50 #asap:424 #ased:46 #asel:-46 #asen:-76
#asie:67 #aste:-56 #ater:78 #atev:97 #athe:-64 #atur:56 #auto:-46 #avad:101 #avai:132 #aven:67 #aves:44 #avis:-85
#aybe:117 #bado:114 #baja:-175 #bajo:135 #band:55 #bank:84 #beca:-72 #beer:-88 #befo:82 #behi:45 #bett:58 #betw:83
#bila:109 #blen:47 #book:-66 #bout:109 #brak:69 #brea:57 #bren:-74 #buji:-44 #busc:61 #busq:50 #busy:-53 #caer:51
#call:-91 #camb:-79 #came:-115 #camp:85 #canc:-75 #cans:53 #cari:-86 #cash:48 #ccio:66 #ceip:-45 #cesi:55 #char:-54
#cheq:48 #cher:48 #chev:99 #chil:-45 #chin:47 #choi:45 #choo:102 #chti:52 #cide:-54 #cier:66 #cita:111 #cito:50
#cked:-75 #clas:123 #cles:53 #clie:-49 #cloc:68 #clos:94 #coge:-49 #cole:77 #come:-54 #como:68 #comp:-74 #cost:-52
#coul:106 #coup:46 #cras:49 #cree:51 #cret:70 #crib:-99 #cuad:73 #cuan:54 #cuel:61 #cycl:49 #damo:53 #dari:46
#darl:-62 #daro:-55 #date:-50 #deal:51 #deci:-55 #deja:-52 #dela:-59 #deme:-59 #dent:60 #depe:-71 #depl:-52 #dere:-48
#desp:67 #dias:116 #diga:92 #digo:-150 #dije:-64 #dime:-61 #disp:63 #dita:-82 #dito:67 #dona:-62 #door:63 #down:83
#dran:50 #dras:47 #dria:96 #driv:-48 #drop:108 #eads:-56 #eals:-73 #eans:-59 #earl:174 #easi:74 #easy:69 #ecau:-72
#ecei:-45 #ecen:-84 #echi:50 #ecib:48 #ecid:-56 #ecit:64 #ecor:-44 #edam:53 #edan:116 #eded:-60 #edio:80 #edne:58
#eede:-60 #eekd:44 #eeps:-71 #eers:-109 #efer:65 #efor:82 #egar:-55 #egue:-45 #egun:-63 #ehin:45 #eigh:119 #eipt:-45
#eith:60 #ekda:100 #elev:52 #eliz:-55 #ella:-47 #elvo:-81 #eman:97 #emin:-64 #emos:-127 #empe:-52 #ence:-59
#ende:-109 #endo:72 #endr:161 #enen:60 #ener:-63 #enev:188 #enga:158 #enin:125 #enla:-78 #enme:-67 #enos:115 #enti:58
#entr:121 #epen:-71 #ephe:-53 #epla:45 #eplo:-52 #eque:48 #equi:96 #eran:67 #erde:-72 #erio:87 #erne:63 #erst:-47
#erto:-86 #esas:177 #esca:46 #escr:-102 #esda:107 #esit:54 #esos:174 #espe:-91 #espu:61 #essa:-76 #essi:-64
#esta:-112 #esto:140 #eter:61 #etir:140 #ette:63 #ettl:-46 #etwe:83 #evar:63 #even:89 #ever:50 #eves:66 #fech:88
#feli:-55 #feri:-75 #fill:-77 #find:109 #firs:66 #fore:73 #form:-66 #free:105 #fres:-127 #frid:79 #from:83 #fron:-51
#fter:54 #game:-58 #gamo:56 #gent:-94 #ghte:57 #girl:50 #give:-76 #gles:69 #glov:-45 #goes:-62 #gost:55 #grab:-51
#grad:-55 #gran:86 #guer:-83 #guie:104 #guir:-44 #gunt:-98 #habr:117 #haga:51 #hair:73 #hake:-108 #half:55 #hama:56
#hame:-80 #hard:-44 #harm:-49 #hatc:61 #hate:90 #have:181 #head:78 #hear:51 #hene:188 #hens:-61 #hequ:48 #here:86
#hers:60 #heve:99 #hich:86 #high:68 #hijo:-58 #hina:50 #hind:45 #hing:80 #hird:-47 #hirt:48 #hola:58 #hold:-88
#hole:91 #hool:85 #hora:-103 #horn:-73 #hose:117 #hour:61 #hrow:88 #htim:52 #humo:-63 #hurs:82 #iado:-125 #ible:150
#ibre:47 #icar:44 #iche:101 #icie:50 #icke:-45 #iday:136 #idea:-91 #ides:70 #iemp:-56 #iene:86 #ient:73 #iera:67
#ierc:77 #iern:58 #iero:-49 #ierr:69 #iest:45 #ifor:-67 #ight:62 #igue:-83 #igui:107 #ijer:-64 #ilab:52 #ilad:100
#ille:-63 #imer:69 #impi:44 #inan:-90 #inar:-63 #inco:-64 #inde:118 #ingl:56 #ingo:59 #insp:56 #inst:75 #inue:63
#iper:72 #ipio:54 #irad:60 #ired:86 #irmo:-74 #irst:66 #irty:48 #isen:-52 #isie:55 #isio:58 #isit:-62 #isma:47
#ismo:53 #ispa:63 #issi:-67 #itam:-49 #itar:-73 #itch:-75 #iter:112 #ithe:60 #itte:-77 #ives:92 #izad:-44 #ized:-58
#jaja:-73 #jeje:-56 #jero:-55 #jubi:109 #jueg:-49 #juev:104 #kday:100 #kids:79 #king:58 #knee:48 #lace:-80 #lado:77
#lama:-70 #lamo:-58 #land:-55 #laro:77 #lase:68 #lass:55 #late:90 #ldri:-55 #lega:-62 #lego:61 #legu:-60 #leme:-86
#lenm:46 #leva:51 #libr:54 #lica:45 #lida:65 #lien:67 #lier:68 #like:82 #limp:44 #line:45 #llam:-77 #lled:-90
#llow:46 #lock:47 #lome:-97 #losi:59 #lowe:52 #loye:-47 #lqui:109 #ltas:-61 #lune:101 #maco:56 #madi:-80 #madr:55
#mail:75 #male:-78 #mana:145 #mand:-53 #mann:-48 #mara:-52 #marq:-44 #mart:89 #marz:-101 #matt:103 #mayb:117
#mbia:-82 #mbre:-98 #mean:-68 #medi:82 #meno:100 #mera:55 #mero:-91 #mess:-78 #meto:-87 #mewh:50 #mier:199 #mina:-100
#mind:-101 #mine:-86 #mism:100 #miss:-67 #mond:105 #more:-91 #morn:73 #moro:137 #morr:44 #moth:57 #moto:53 #move:-145
#mpez:-46 #mpia:44 #mpra:45 #muev:-46 #myse:-59 #naci:56 #nana:123 #nced:-54 #ncel:-76 #nces:84 #ncht:52 #nday:110
#ndow:73 #ndra:155 #ndro:-58 #neak:50 #nece:46 #neit:47 #nemo:-89 #neph:-53 #ners:-103 #nesd:58 #ness:-51 #nest:91
#next:184 #ngan:101 #nged:-75 #ngin:45 #ngle:56 #ngos:59 #nico:58 #nigh:-98 #nine:104 #ning:190 #nish:130 #nner:-80
#noon:112 #norm:47 #nows:74 #nspe:56 #ntad:51 #ntem:-77 #ntes:117 #ntin:49 #ntis:48 #nudg:-83 #nute:-46 #nuto:49
#nyth:142 #nyti:48 #nywh:70 #ocho:79 #odas:45 #oday:80 #odri:146 #ofte:-48 #oger:-50 #okin:62 #oles:62 #olls:-69
#omas:62 #omat:-51 #omer:-87 #omes:-94 #omet:62 #omew:63 #omod:50 #omor:86 #ompr:-50 #onad:-70 #onan:-50 #once:98
#onda:164 #onem:-49 #oner:51 #ones:54 #only:104 #onme:49 #onta:117 #onte:62 #onto:96 #ontr:-63 #oone:130 #oons:77
#oost:76 #open:115 #opin:71 #oppi:47 #oqui:67 #orar:-84 #oras:-75 #orcy:52 #orma:48 #orme:-66 #orni:68 #orre:-70
#orro:51 #orry:63 #oses:87 #osib:97 #osin:59 #osit:-53 #osse:-47 #ossi:81 #oste:56 #otat:98 #othe:56 #otor:49
#ough:46 #ould:115 #ours:-56 #ovel:73 #oyed:-47 #paci:70 #para:67 #pare:53 #parr:89 #part:-51 #pasa:-47 #pase:-94
#paso:59 #pend:-90 #peni:76 #pero:83 #pers:63 #pezo:-46 #phew:-53 #pick:106 #pido:59 #ping:74 #plac:-93 #play:48
#ploy:-52 #podr:155 #ponm:49 #poqu:71 #port:56 #posi:55 #poss:91 #post:-53 #pran:61 #pref:47 #preg:-98 #pric:53
#prin:54 #pron:234 #prop:-86 #prov:64 #pued:247 #puer:-115 #pull:59 #punt:53 #quea:-72 #quee:49 #quie:93 #quin:70
#quis:48 #quit:74 #quiv:-55 #rade:-87 #rado:-56 #radu:-59 #raja:-78 #rake:73 #rang:-68 #rani:58 #rari:-87 #rash:66
#rath:-55 #rbag:44 #rcol:77 #rcyc:52 #rdad:45 #rdan:-83 #rday:60 #rdes:44 #reac:-44 #real:61 #rear:-48 #rece:-109
#reco:-76 #refe:65 #regu:-99 #reme:-112 #remi:-64 #resh:-117 #reso:46 #resu:-81 #reti:140 #rgan:-49 #rgen:-61
#rici:61 #rida:104 #righ:66 #rime:69 #rimo:193 #rivi:-55 #rlie:107 #rmal:47 #rmin:-52 #rnes:66 #rnin:70 #road:-64
#roke:86 #roma:-52 #rong:-48 #ront:183 #room:73 #ropi:-81 #rota:95 #roun:74 #rrad:-92 #rrar:90 #rren:63 #rrer:-55
#rrow:130 #rted:-67 #rtes:96 #ruck:46 #ruin:-76 #saba:113 #sabe:54 #sabr:-45 #sado:51 #sage:-71 #said:-85 #sala:-71
#sald:-55 #sali:52 #sarl:-55 #satu:62 #scan:56 #scho:85 #scre:51 #scri:-101 #sday:152 #seco:52 #seen:67 #sela:-45
#self:-59 #sema:132 #send:-66 #senl:-109 #senm:-53 #sett:-46 #shak:-70 #shes:-44 #shop:-134 #sibl:188 #sick:-55
#siem:-49 #sier:132 #sion:60 #sita:-59 #sitt:-48 #size:-68 #skin:-54 #snea:50 #sold:44 #solo:93 #some:64 #soon:117
#sorr:79 #sort:-50 #soun:-72 #spac:53 #spar:119 #spue:61 #ssag:-76 #ssed:-126 #ssib:91 #ssin:-72 #stay:58 #stos:80
#stro:91 #suel:-111 #sund:110 #swap:-61 #swit:-83 #take:72 #tama:-79 #tamo:-50 #tara:-92 #tate:47 #tati:61 #teac:62
#team:-48 #teme:-89 #temp:53 #tend:105 #tene:-63 #teng:175 #tent:71 #teri:83 #term:-52 #tery:-46 #test:64 #teve:97
#text:-66 #than:-96 #then:109 #ther:72 #thin:48 #thos:122 #thro:74 #thur:110 #tick:48 #tien:69 #till:-110 #time:71
#ting:63 #tipo:98 #tira:76 #tire:44 #tist:48 #tmrw:102 #toda:58 #told:-61 #toma:-49 #tomo:77 #toni:55 #torc:52
#trad:-68 #trae:46 #trai:-74 #tran:77 #tree:53 #trip:75 #truc:44 #tter:50 #ttin:52 #tues:146 #tune:47 #turd:62
#ture:-56 #twee:83 #uadr:73 #ualq:109 #uand:64 #ubil:109 #udam:-44 #udge:-109 #ueda:139 #uedo:78 #uego:-76 #uela:61
#uelv:-56 #uerc:-78 #uero:-83 #uesd:49 #ueve:75 #uevo:-45 #uien:73 #uier:122 #uisi:56 #uita:-83 #uito:204 #uivo:-55
#unas:-62 #undo:118 #undr:-94 #unds:-55 #unes:101 #unos:-61 #unte:-81 #urda:62 #urno:103 #urns:-96 #usco:44 #used:-79
#usqu:50 #uste:111 #utos:49 #vail:132 #varl:58 #vaya:92 #vean:150 #vely:73 #veni:49 #vent:47 #vera:-63 #vers:-77
#very:-110 #vete:53 #viaj:-50 #vida:-48 #vier:119 #vise:-59 #vivo:69 #vuel:54 #want:47 #wedn:58 #weds:72 #week:84
#ween:83 #well:103 #went:-57 #were:-54 #what:58 #when:108 #wher:70 #whic:97 #wife:59 #wipe:69 #witc:-83 #woke:-46
#writ:-104 #wron:-48 #xpli:44 #ycle:53 #year:-60 #youd:82 #ysel:-59 #ythi:139 #ytim:48 #ywhe:70 %again_later:95
%again_later%agree:49 %again_later%away:-103 %again_later%busy:-105 %again_later%call_off:86
%again_later%car_part:-44 %again_later%doubt:-223 %again_later%fails:94 %again_later%family:68
%again_later%gone_car:45 %again_later%leave_me:-64 %again_later%message:68 %again_later%odometer:-75
%again_later%opening:98 %again_later%pay_day:-184 %again_later%phone:-50 %again_later%refuse:-67
%again_later%season:-66 %again_later%smoke_smell:-83 %agree:56 %agree%do_it:-58 %agree%elsewhere:56 %agree%family:106
%agree%gone_car:44 %agree%how_long:45 %agree%meaning:45 %agree%message:79 %agree%odometer:117 %agree%on_way:-53
%agree%opening:112 %agree%pay_day:75 %agree%phone:140 %agree%season:194 %agree%smoke_smell:-47 %agree%thanks:110
%agree%wrong_one:137 %away:-51 %away%call_off:-69 %away%car:-79 %away%elsewhere:44 %away%fails:74 %away%family:-59
%away%gone_car:90 %away%leave_me:61 %away%lift:139 %away%odometer:143 %away%on_way:102 %away%pay_day:-64
%away%phone:54 %away%question:82 %away%shift_it:-53 %away%staff:76 %away%start_again:57 %away%thanks:49
%away%wrong_one:-113 %bad%bring:-44 %bad%message:-46 %bad%place:54 %bad%shift_it:54 %bring:150 %bring%busy:84
%bring%car:84 %bring%car_part:114 %bring%fails:115 %bring%family:51 %bring%gone_car:-110 %bring%lift:-82
%bring%meaning:-88 %bring%message:110 %bring%noise:140 %bring%odometer:-178 %bring%opening:115 %bring%phone:116
%bring%season:-74 %bring%shift_it:-193 %bring%start_again:57 %busy%fails:110 %busy%family:-83 %busy%leave_me:94
%busy%lift:-107 %busy%meaning:90 %busy%money:-108 %busy%pay_day:52 %busy%question:-49 %busy%refuse:79
%busy%season:-78 %call_off%car_part:-67 %call_off%do_it:-89 %call_off%doubt:93 %call_off%elsewhere:59
%call_off%family:-48 %call_off%gone_car:-83 %call_off%leak:86 %call_off%lift:51 %call_off%message:-120
%call_off%money:68 %call_off%on_way:87 %call_off%refuse:121 %call_off%season:-110 %call_off%shift_it:61
%call_off%start_again:-73 %call_off%thanks:-107 %call_off%wrong_one:59 %car:66 %car%do_it:44 %car%fails:-49
%car%family:93 %car%gone_car:-141 %car%lift:50 %car%noise:58 %car%question:-62 %car%refuse:-53 %car_part:62
%car_part%do_it:110 %car_part%fails:80 %car_part%how_long:50 %car_part%leave_me:-57 %car_part%lift:71
%car_part%meaning:53 %car_part%message:-49 %car_part%money:103 %car_part%noise:73 %car_part%odometer:-98
%car_part%pay_day:56 %car_part%season:-64 %car_part%shift_it:79 %car_part%staff:-56 %car_part%wrong_one:-47
%do_it:-66 %do_it%doubt:84 %do_it%elsewhere:-80 %do_it%how_long:-99 %do_it%lift:-59 %do_it%machine:-48
%do_it%meaning:75 %do_it%money:-58 %do_it%odometer:-63 %do_it%on_way:49 %do_it%opening:81 %do_it%phone:49
%do_it%question:61 %do_it%shift_it:49 %do_it%start_again:46 %do_it%thanks:-88 %doubt%elsewhere:77 %doubt%fails:-47
%doubt%meaning:95 %doubt%on_way:54 %doubt%place:54 %doubt%question:79 %doubt%season:-140 %doubt%shift_it:-180
%doubt%wrong_one:-46 %elsewhere%gone_car:48 %elsewhere%meaning:73 %elsewhere%money:47 %elsewhere%opening:65
%elsewhere%pay_day:-57 %elsewhere%place:86 %elsewhere%refuse:44 %elsewhere%staff:48 %elsewhere%start_again:45
%elsewhere%who:48 %fails%how_long:-88 %fails%noise:-44 %fails%phone:64 %fails%refuse:-86 %fails%shift_it:-51
%fails%start_again:70 %family:-94 %family%gone_car:53 %family%how_long:45 %family%leave_me:64 %family%lift:79
%family%pay_day:-64 %family%place:-53 %family%start_again:-112 %gone_car%how_long:-69 %gone_car%opening:55
%gone_car%pay_day:62 %gone_car%phone:123 %gone_car%place:48 %gone_car%staff:58 %gone_car%thanks:-55 %how_long:133
%how_long%leak:46 %how_long%leave_me:92 %how_long%lift:-58 %how_long%meaning:103 %how_long%money:125
%how_long%odometer:-104 %how_long%place:57 %how_long%question:-167 %how_long%shift_it:-57 %how_long%smoke_smell:-46
%how_long%who:-53 %leave_me%message:-67 %leave_me%noise:-65 %leave_me%on_way:-117 %leave_me%pay_day:90
%leave_me%question:73 %leave_me%season:51 %leave_me%shift_it:85 %leave_me%start_again:-66 %lift%message:48
%lift%start_again:69 %lift%wrong_one:98 %machine:62 %machine%staff:76 %machine%wrong_one:56 %meaning%question:-138
%meaning%shift_it:49 %meaning%wrong_one:76 %message:-116 %message%on_way:-70 %message%opening:45 %message%phone:48
%message%start_again:126 %message%wrong_one:71 %money:-106 %money%noise:59 %money%question:53 %money%refuse:-136
%money%season:-117 %money%shift_it:-54 %money%smoke_smell:-70 %money%wrong_one:-114 %noise:60 %noise%shake:44
%odometer:52 %odometer%place:-55 %odometer%question:60 %odometer%season:48 %odometer%wrong_one:-71 %on_way:54
%on_way%opening:56 %on_way%place:136 %on_way%season:102 %on_way%shift_it:92 %opening:-211 %opening%place:-122
%opening%refuse:47 %opening%season:-87 %opening%shift_it:66 %opening%staff:-114 %opening%start_again:-49
%opening%wrong_one:136 %pay_day:-62 %pay_day%shift_it:-123 %phone:-151 %phone%question:-74 %phone%refuse:131
%phone%staff:-61 %phone%who:-47 %place%question:-59 %place%refuse:131 %place%season:63 %place%shift_it:-138
%place%staff:-73 %place%start_again:57 %question:45 %question%season:-68 %question%staff:-85 %question%thanks:-51
%question%who:-52 %refuse%staff:-51 %refuse%start_again:53 %season:-108 %season%shift_it:-206 %season%start_again:-96
%season%thanks:-98 %season%wrong_one:-91 %shift_it:123 %shift_it%thanks:63 %shift_it%wrong_one:-58 %smoke_smell:-54
%staff:-78 %staff%start_again:83 %staff%wrong_one:-53 %start_again%wrong_one:-50 %who:-63 @?:90 @after_visit:-118
@car:-99 @confirm:-951 @confirm_stop:-110 @day:210 @day_:280 @later:-68 @nothing:-352 @odometer:-195 @offers:-374
@offers_a_las:-83 @offers_the_th:-73 @time:280 @times:496 ^_$:-331 ^_a:54 ^_about:-46 ^_abren:-58 ^_afternoon:-110
^_al:73 ^_am:-103 ^_antes:-64 ^_any:166 ^_anything:69 ^_anytime:48 ^_are:-163 ^_as:73 ^_asap:133 ^_ask:-50 ^_at:253
^_before:-48 ^_better:82 ^_book:70 ^_brakes:52 ^_call:-294 ^_cant:-51 ^_changed:-47 ^_check:-46 ^_claro:46 ^_como:-62
^_cual:-88 ^_cualquier:99 ^_cualquiera:-51 ^_cuanto:-77 ^_depende:-81 ^_despues:-57 ^_do:-105 ^_doesnt:90 ^_early:58
^_el:-123 ^_eleven:73 ^_end:57 ^_entre:52 ^_es:-128 ^_esa:-47 ^_ese:46 ^_esta:-45 ^_estan:-108 ^_estoy:-69
^_feliz:-55 ^_filled:-46 ^_fine:-80 ^_first:-73 ^_fri:59 ^_friday:-146 ^_give:-96 ^_go:-57 ^_hableme:-103 ^_half:76
^_hasta:-76 ^_have:141 ^_hit:47 ^_hola:58 ^_hours:306 ^_how:-124 ^_i:106 ^_id:118 ^_idk:-62 ^_if:-97 ^_in:97 ^_la:-85
^_last:127 ^_late:48 ^_later:-88 ^_lets:-75 ^_lo:152 ^_make:177 ^_manana:72 ^_martes:82 ^_me:-107 ^_mejor:47 ^_mon:99
^_monday:-73 ^_my:81 ^_nada:89 ^_necesito:84 ^_neither:55 ^_new:-93 ^_next:132 ^_ningun:-81 ^_ninguna:79 ^_no:56
^_nomas:70 ^_none:56 ^_noon:149 ^_oigan:-47 ^_ok:-112 ^_only:103 ^_open:-427 ^_or:94 ^_otra:60 ^_para:-246
^_pasela:-45 ^_pero:-62 ^_please:-67 ^_podria:45 ^_pongame:47 ^_por:-77 ^_puede:-65 ^_que:-79 ^_quiero:97 ^_quit:-48
^_re:65 ^_remind:-100 ^_right:126 ^_sabado:96 ^_saliendo:68 ^_sat:91 ^_saturday:64 ^_se:-118 ^_second:73 ^_sipi:-69
^_sold:48 ^_solo:54 ^_somewhere:102 ^_sounds:67 ^_stop:-46 ^_sunday:100 ^_take:-113 ^_text:67 ^_the:-97 ^_there:-67
^_this:90 ^_those:72 ^_thousand:46 ^_thursday:-114 ^_tiene:-56 ^_today:47 ^_tomorrow:102 ^_tomorrows:-65
^_trabajan:-105 ^_try:-244 ^_tues:67 ^_turns:-96 ^_two:-44 ^_un:94 ^_una:81 ^_va:50 ^_wed:74 ^_weekend:67
^_whatever:66 ^_when:-71 ^_whenever:131 ^_which:-163 ^_whichever:100 ^_white:52 ^_will:-46 ^_wont:-84 ^_work:-73
^_works:-44 ^_ya:-57 ^_yeah:93 a:79 a__and:-97 a__back:50 a__can:52 a__casa:-62 a__el:-53 a__en:-53 a__esta:-53
a__first:-53 a__for:-89 a__hora:110 a__i:46 a__iglesia:-48 a__is:-75 a__me:88 a__misma:49 a__no:71 a__ocho:-50
a__of:61 a__on:-51 a__ora:49 a__para:60 a__por:63 a__que:62 a__si:124 a__tardar:52 a__tarde:-46 a__the:45 a__una:108
a__weekend:-75 a__weeks:-88 a_cuanto:-52 a_day:-84 a_dos:77 a_esa:57 a_few:-62 a_good:-130 a_hole:123 a_la:65
a_las:144 a_mas:52 a_monday:121 a_new:-66 a_ring:-91 a_saturday:-131 a_su:111 a_time:55 a_tuesday:212 a_week:-79
about:109 about_a:-51 about_monday:60 abren:-74 abren_$:-88 abren__domingos:57 abren__sabado:-56 abren_el:-56
acaban:-53 acabe_la:65 aceite_cuanto:53 across:77 across_the:78 after:104 after_$:44 after__day:-48 after__you:-61
after_i:107 after_my:59 after_that:48 after_work:125 afternoon:-80 afternoon_instead:-76 afternoons:77 again__the:-45
again_and:54 again_on:-70 again_please:74 agarran:70 agosto:55 agosto_$:55 ahead:57 ahi__caigo:-58 ahi_le:-73
ahi_mismo:-44 ahora_no:-52 air:-52 al:71 al__dia:69 al__el:54 algo:109 all:90 all_$:-64 all__have:58 all__the:-71
all_day:-44 all_week:114 also:91 am:216 am_$:45 am_i:-83 am_y:84 an:156 an__change:68 an__later:83 an_appointment:121
an_inspection:115 an_oil:46 and:106 and__have:96 and__i:-69 and__in:54 and__is:58 and__it:72 and__many:50
and__much:-49 and__need:-107 and_can:54 and_could:-51 and_im:106 and_is:70 and_it:50 and_tell:92 and_the:-53
and_we:124 and_what:61 ando:60 ano:-56 antes:122 antes__que:71 antes_de:52 antes_no:-75 any:284 any__of:-162
any__that:48 any__this:76 any__those:85 any__you:-62 any_chance:141 any_day:139 any_more:-69 any_morning:44 any_of:88
any_time:116 any_way:-76 anything_$:-108 anything__the:116 anytime:48 anywhere:70 appointment_for:50 aqui:59 are:-71
are__closed:46 are__there:-141 are_you:-136 are_your:-58 around:99 around_$:70 as:135 as__as:95 as__have:47
as_long:50 as_of:-211 as_you:128 asap:424 asi:-47 asi_$:-55 asi_no:-53 asi_que:116 ask:-244 ask__again:-59
ask_me:-219 at:117 at__and:-94 at__ill:61 at__so:96 at__the:-75 at_all:-91 at_and:68 at_every:46 at_instead:-85
at_k:-44 at_me:-48 at_my:-66 at_noon:-71 at_or:-97 at_ten:52 at_work:-84 auto:-48 available:52 avisenme:-53
away_from:-44 back__the:-58 back_from:-81 back_in:48 back_to:58 bank:84 be:123 be__by:-78 be__day:83 be__in:-67
be__with:51 be_a:-46 be_better:91 be_done:-51 be_the:98 be_there:54 because:-72 before:82 before__open:49
before_the:48 before_you:51 behind:45 better:58 better_$:48 between:83 between_and:-44 bien_$:-48 bill:-51 bird:-51
bit:-49 bit_much:-46 blue_$:-59 both_days:87 brake_light:-49 brakes:45 bring_it:114 bro:-110 btw:85 btw_$:72 bug:-60
bug_me:-59 bus:81 bus_$:49 busco:44 busqueme:54 busy:-53 but:243 but__it:96 but__need:-97 but_friday:-55 but_i:-67
but_it:-72 but_monday:53 but_my:65 by:44 by_$:50 by_friday:68 by_then:-50 by_tomorrow:54 cae:-44 caer:51 caigo_$:67
call:-99 call_me:78 calle:49 cambiar__cita:-63 cambiar_el:70 cambiar_mi:-63 cambio_de:44 cambio_el:-60 came:-115
came__can:-64 came_on:51 came_up:-64 campo:83 can:175 can__be:101 can__check:-49 can__come:123 can__do:147
can__have:-50 can__it:125 can__make:-51 can__me:71 can__stop:98 can__tell:-51 can_be:-45 can_do:-70 can_get:63
can_i:61 can_it:56 can_my:-72 can_we:-95 can_you:65 cancel:-100 cancel__and:-49 cancel_thursday:-50 cant__in:-73
cant__thursday:-123 cant_get:-75 cant_make:-125 cant_say:-75 carro__para:-53 carro_el:77 casa:-53 cash:48 casi_no:-48
cerrar:58 cerrar_$:57 chamacos:56 chance_of:-83 changed__oil:-70 changed_it:-53 check:-51 check_$:66 check__me:-61
check_with:-61 christmas_$:-126 cierren:51 cita:74 cita_$:-137 cita__favor:103 cita_el:122 cita_para:72 cita_por:103
cita_que:51 clase:70 clase_de:70 clear:46 clock:85 close:-78 closed_$:47 closing:66 come__at:64 come__friday:97
come__instead:-186 come_up:-50 comes:-94 como__la:-73 como__las:119 como_el:72 como_en:-45 con:-83 con_todo:44
con_ustedes:-133 confirmo:-74 confirmo_$:-62 cost:50 cost_$:80 cost__i:-49 cost_and:103 costo:-76 costo_$:-81
could:136 could__be:55 could__come:60 could__do:142 could__me:-68 could__the:70 could__thursday:48 could_do:76
could_i:88 could_it:45 could_use:-44 cuadra:45 cuadras:77 cual:-58 cual__su:-46 cual_es:-49 cualquier:172
cualquier_dia:48 cualquiera:-87 cualquiera_de:-112 cuando:49 cuando__el:-48 cuando_lo:-97 cuando_me:-54
cuando_paso:-51 cuando_pueda:-68 cuando_se:-48 cuando_tenga:-70 cuando_tengan:109 cuantas:-45 cuanto:45 cuanto_$:-64
cuanto__el:49 cuanto__las:-94 cuanto_se:155 cuatro_$:-92 dan_el:-46 darle:-62 date:-91 day:148 day_$:-193 day__the:50
day_after:124 day_friday:178 day_is:75 de:92 de__a:140 de__abran:-50 de__al:107 de__como:-57 de__dia:-102 de__dos:-48
de__el:134 de__escuela:-55 de__hija:-81 de__iglesia:61 de__la:-71 de__me:64 de__mi:47 de__nomas:52 de__otra:54
de__se:72 de__semana:75 de__si:56 de__tarde:-47 de__y:-99 de_aqui:77 de_cuanto:95 de_dia:-57 de_esas:72 de_esos:-75
de_este:-56 de_las:-44 de_los:45 de_manana:-158 de_marzo:137 de_mensajes:47 de_mes:105 de_noche:-57 de_numero:49
de_otra:-62 de_paso:77 de_preferencia:54 de_que:-48 de_thanksgiving:57 deal_$:95 deje:53 deje_a:67 dejo_$:-50
dejo_el:65 dejo_en:-123 del__de:61 del__el:-56 del__y:-45 del_dia:-45 del_jueves:-95 del_martes:-46 del_mes:54
deme_el:-45 dentist:50 depende:-64 deployed:-47 descanso:55 desde__lunes:-62 desde_el:-68 despues:61 despues_$:-100
despues__dejar:49 despues__la:61 despues__las:84 despues_del:83 di:-46 dia:191 dia__el:94 dia__que:-64 dia__sea:-89
dia_de:82 dia_menos:108 dia_no:56 dia_o:-44 dia_pero:80 dias:116 dias_$:59 did:-53 digame:-102 digan:49 digo:-150
digo_$:-117 dijeron:-55 dime:-61 do:87 do_$:81 do__at:-158 do__close:81 do__doors:-53 do__for:-134 do__in:-54
do__need:-60 do__open:-51 do__take:50 do__the:-63 do__work:-96 do_friday:76 do_instead:183 do_it:-67 do_me:55
do_thursday:-112 do_you:-96 does__need:82 doesnt_matter:122 doesnt_work:-72 domingo_$:-50 domingo__la:55
domingo_en:52 domingo_o:86 domingos:59 done_in:-50 dont__my:-47 dont__texts:54 dont_have:-45 dont_know:-46
dont_text:-48 dont_want:-57 dont_you:88 dos_$:-120 dos__que:50 dos_cuadras:77 dos_dias:76 dos_horas:-121
dos_semanas:85 drives:49 driving:-55 driving_$:-62 drop:77 drop__off:44 drop_off:45 dry:-52 earlier:68 earlier_the:49
early:69 early_bird:50 easier:62 easy:72 echo:-57 eight:50 el:218 el_$:91 el__a:-48 el__bien:47 el__carro:61
el__como:68 el__cuanto:59 el__en:51 el__entonces:-61 el__ese:-83 el__esta:49 el__fue:-48 el__hoy:-96 el__jueves:-52
el__lo:50 el__marzo:97 el__o:-76 el__para:78 el__pasado:-52 el__pero:62 el__puedo:103 el__que:66 el__sea:93
el__si:108 el__sigue:-64 el__temprano:70 el__tengo:45 el__trabajo:-84 el__voy:92 el_carro:-96 el_costo:-79
el_domingo:-62 el_fin:-73 el_finde:90 el_lunes:102 el_martes:160 el_miercoles:80 el_mismo:-106 el_precio:-79
el_sabado:84 el_trabajo:-77 el_verano:-52 eleven:52 else:50 empezo:-46 empezo_a:-46 en__del:-55 en__dias:-92
en__escuela:92 en__hora:45 en__lista:47 en__manana:-68 en__mananita:-70 en__se:160 en__semanas:47 en__tarde:118
en__trabajo:-48 en_cuanto:47 en_dos:49 en_la:55 en_lugar:-62 en_marzo:-113 en_medio:45 en_unos:-62 en_vez:-79
end_$:-107 end__the:62 end_of:90 ends:63 engine_light:48 entonces_$:-73 entrar_a:-51 entre_semana:-92 era:-90
era_el:-57 era_la:-47 es:-103 es__horario:-46 es__que:-65 es__tengo:-51 es_de:-69 es_la:-71 es_mi:155 es_que:51
es_rapido:60 es_su:-46 esa_hora:65 esas:187 esas_horas:122 esas_no:113 escuela:61 escuela_$:-87 ese:49 ese__a:-47
ese__no:118 ese_dia:129 eso:54 eso_$:-56 eso_de:53 esos:140 espacio:47 esta:-100 esta_el:-83 estan:-61 estan_$:57
estan__el:-114 este_mes:-171 este_viernes:76 esto:91 estos:82 estoy__mi:-55 evening:115 evenings:-66 every:-111
every_morning:-70 fa:102 fa_$:102 favor_$:-111 fecha:88 feliz:-55 few:-62 few_weeks:-57 figure_$:49 filled:-77
filled_it:-72 fin:74 fin__mes:104 fin_de:74 finde:90 finde_$:100 fine_$:-64 first:66 first_$:-81 first__of:64
first_thing:61 first_week:64 fit:81 fix:46 flat__the:-48 fly:48 for:46 for__inspection:106 for__is:-147 for__of:-49
for__oil:119 for__th:53 for__tires:-58 for_a:73 for_an:134 for_lunch:-75 for_me:108 for_monday:58 for_my:75
for_thursday:-70 for_tires:56 free:130 free_$:-91 fresh:-117 fri:132 fri_$:-47 friday:65 friday__i:68 friday__ill:69
friday__is:55 friday__the:-47 friday__time:64 friday__you:-56 friday_afternoon:-94 friday_am:56 friday_and:66
friday_but:112 friday_is:-91 friday_one:46 friday_please:-67 friday_same:143 friday_works:-46 friday_would:-70
fridays:47 from:83 from__and:47 from__back:46 from_home:47 from_me:-53 from_my:-116 from_the:59 from_you:-44
front:-51 fue:-90 get:46 get__in:96 get__the:48 get_it:-82 get_me:55 get_my:61 get_the:-46 girl:55 give:-77
give__a:-83 give_me:-70 go__friday:-63 go_ahead:64 go_with:-60 goes:-62 going__be:-58 good_$:-62 good_for:-77 got:220
got_$:147 got__wrong:-44 got_a:198 got_any:-66 got_anything:62 got_it:-127 got_the:-52 got_to:-66 gracias_por:-50
grand:60 grand_$:54 guy:-88 hableme:-67 hablenme:46 habra:109 had:-45 had__done:44 hagan:49 half:55 half__hour:65
half_an:65 half_past:-50 hard:-44 has:102 has__be:44 hasta__me:-51 hasta_la:51 hasta_que:-48 have__it:-71
have__on:115 have_a:97 have_been:-45 have_it:-76 have_me:97 have_my:-48 have_no:44 havent:46 hay:133 hay_$:134
hay__de:44 hay_chance:78 hay_que:-113 he:54 heading:63 hear:51 here_$:70 high:65 high_$:61 hola:58 hold:-95 hole:123
home_$:49 hon:57 hora:76 hora_$:104 hora__el:-65 hora_abren:62 hora_de:-57 hora_del:50 hora_no:82 hora_que:109
horario:-103 horas:-75 horas_$:-71 horn:-73 hour:139 hour_later:83 hours:-78 hours__you:47 hours_for:-56 hours_on:-96
how:88 how__are:-83 how__hours:70 how__is:-62 how__it:53 how__monday:60 how__of:-47 how__time:44 how__would:-52
how_about:100 how_is:78 how_late:-74 how_many:54 how_to:44 hoy:102 hoy_$:-70 hoy__a:72 hoy__de:101 hoy__la:65
hoy_en:79 hoy_manana:-103 hoy_mismo:138 humo:-63 humo_$:-78 hundred:-73 i__a:-54 i__an:53 i__anything:-65 i__at:-156
i__back:-68 i__by:102 i__from:58 i__get:-132 i__hear:51 i__in:85 i__my:-98 i__off:78 i__out:115 i__to:-61
i__today:-61 i__use:-44 i__want:-72 i__you:-44 i_be:-47 i_bring:89 i_came:-45 i_come:53 i_do:61 i_leave:47 i_only:-83
i_put:47 i_say:-57 i_stop:104 i_was:51 i_work:51 id:136 id_rather:105 id_sooner:-102 id_want:71 idea:-47 idk:-63
if__can:84 if__got:57 if__is:103 if_i:-108 if_possible:-48 if_you:85 if_youre:46 ill__by:65 ill_be:108 ill_have:-51
ill_sit:51 ill_stop:78 ill_take:-71 im:69 im__from:-63 im_back:-63 im_down:98 im_driving:-59 im_good:-61 im_not:-45
im_off:-66 im_out:-59 im_retired:73 importa:44 in:50 in__afternoon:55 in__an:-53 in__day:-117 in__few:-58
in__hour:-71 in__middle:51 in__of:-67 in__the:82 in__when:44 in_an:-71 in_at:67 in_for:48 in_friday:73 in_the:-52
in_two:46 in_your:133 ingles:56 inspection_$:75 instead_$:130 instead_of:-53 ir_$:-44 is:46 is_$:-150 is__a:-71
is__at:75 is__cost:49 is__free:-45 is__inspection:-44 is__ok:84 is__on:72 is__one:117 is__only:44 is__open:51
is__price:46 is__the:-176 is__up:-50 is__with:100 is_at:-64 is_better:-140 is_come:-50 is_fine:56 is_friday:65
is_getting:-48 is_good:-81 is_in:-130 is_my:77 is_not:87 is_ok:96 is_on:-71 is_over:-51 is_that:-77 is_the:-157
is_there:127 is_thursday:104 is_what:-110 ish:155 it__before:-56 it__by:56 it__dont:48 it__friday:69 it__im:48
it__in:-115 it__me:-51 it__monday:62 it__morning:-61 it__ok:80 it__or:-57 it__the:114 it__under:-55 it__when:55
it_after:-77 it_all:-46 it_and:108 it_back:51 it_be:49 it_come:-67 it_cost:94 it_for:-55 it_friday:99 it_i:52
it_instead:51 it_is:50 it_isnt:44 it_need:55 it_on:-48 it_over:66 it_shakes:-126 it_that:-48 it_thursday:52 it_to:-62
it_today:-73 it_tuesday:-52 it_would:47 jaja_$:52 jaja_el:52 jaja_si:-66 jajaja:-48 jajaja_$:-57 juego:-49 jueves:66
jueves_$:-109 jueves__a:168 jueves__de:48 jueves__el:-185 jueves__la:126 jueves__las:-80 jueves__lo:-72
jueves__que:78 jueves_de:56 jueves_en:46 jueves_pero:87 jueves_si:-119 just__i:-61 just__in:63 k_$:-53 keep_it:61
keeps:-61 key__the:47 kids:77 kids_have:44 know:-87 knows:74 la:63 la__a:-78 la__al:-57 la__antes:100 la__como:-45
la__con:-46 la__de:132 la__el:145 la__hora:52 la__las:-44 la__manana:52 la__no:90 la__pasar:-48 la__que:88
la__semana:123 la_cita:-154 la_de:-99 la_del:-137 la_hora:151 la_manana:-140 la_mas:83 la_misma:47 la_quiero:-100
la_semana:123 la_tarde:80 la_una:109 las:89 las_$:-107 las__bien:-71 las__media:-54 las__no:-62 las__que:50
las__y:112 las__ya:44 las_cuatro:-44 las_dos:-84 las_esta:-53 las_mil:-56 las_no:101 las_ocho:-50 las_por:49 las_y:67
last:46 last_one:51 late__you:-89 late_afternoon:61 late_are:-88 lately_$:-56 later:96 later_$:56 le:-64
le__humo:-105 le__un:69 le_digo:-129 le_puedo:58 le_sale:-95 le_toca:50 leave_it:-52 left_on:64 les__el:44 let_it:-53
libre:78 light:66 like:105 like_$:92 like_that:-58 list:-62 lista__mensajes:47 lista_de:47 llego:61 llego_$:92
llegue:-60 lleva:-48 llevar_a:-46 llevar_el:56 lleve_con:-45 llevo_$:66 lo:-66 lo__antes:-64 lo__cuando:-53
lo__en:-176 lo__la:-51 lo__pronto:100 lo__que:-53 lo__ya:46 lo_dan:-63 lo_dejo:-47 lo_di:-44 lo_llevo:-97 lo_mas:183
lo_necesito:53 lo_tengo:-46 lo_tienen:-83 loaner_$:-56 lol:72 lol_$:-54 long_$:60 long_and:-86 look:-48 looking:61
los:60 los__de:-64 los__en:124 los_de:-64 lovely:73 lug:-67 lugar_$:59 lunch:-49 lunchtime:52 lunes:101
lunes__cuanto:64 lunes_pero:52 mad:54 mail:73 make__instead:65 make_it:221 make_that:59 mama_$:-44 man:-45 manana:90
manana_$:-50 manana__a:-53 manana__las:54 manana_a:84 manana_de:62 manana_me:67 manana_temprano:136 manana_y:-117
manners:-48 many_hours:70 maquina_$:52 march:85 martes:89 martes_$:65 martes__de:-64 martes__la:73 martes__le:-106
martes_a:82 martes_despues:-65 martes_en:64 martes_no:-45 martes_pero:-107 marzo:-101 mas:121 mas_$:-57 mas__como:59
mas__el:81 mas__ese:-47 mas__que:70 mas_pronto:149 mas_tardar:52 mas_tarde:95 mas_temprano:-174 matter:108 may:-72
maybe:117 maybe_$:131 maybe_in:-58 maybe_next:151 me_$:84 me__a:52 me__antes:66 me__before:47 me__dan:-63 me__dos:-57
me__el:84 me__igual:72 me__im:-71 me__mas:-50 me__monday:53 me__on:-70 me__ride:70 me__ring:-91 me__to:70
me__today:61 me__un:101 me__week:-158 me__ya:-60 me__yo:77 me__you:93 me_a:-94 me_about:-74 me_after:-84 me_again:-52
me_before:131 me_da:63 me_digan:62 me_dijeron:-55 me_espero:-44 me_for:65 me_in:-72 me_late:63 me_next:-175
me_off:-49 me_puede:65 me_quedan:126 me_then:-159 me_today:51 me_urge:75 me_what:62 means:-59 medio:89 medio_$:45
medio_dia:64 meeting:-50 mejor__a:63 mejor__lunes:86 mejor_el:101 mejor_la:-98 mejor_lo:-77 menos:100 mensaje:-80
mensajes:65 message:-47 meto:-87 mi:63 mi_$:-46 mi__me:45 mi_cita:-177 mi_hora:-61 mi_mama:68 mi_turno:52 mid:-45
mier:122 miercoles:77 miercoles__las:-49 miercoles_a:-49 miercoles_en:-46 mil_$:-46 min:-55 mine:-100 minute:-47
minutos:49 mis:-101 misma:47 misma_hora:52 mismo:86 mismo_$:46 mismo__pero:60 mismo_dia:-46 missing:-67 mon:197
mon_$:72 mon__tues:58 mon_or:71 monday:126 monday_$:-168 monday__be:58 monday__i:55 monday__time:49 monday_after:-75
monday_at:99 monday_but:121 monday_is:-79 monday_morning:-46 monday_please:-71 monday_so:-151 mondays_$:-48 more:-75
more_$:-57 morning:-143 morning_$:-50 morning_one:-70 motorcycles:52 motorcycles_$:52 move:-120 move__to:-91
move_me:-62 much:-56 much__it:47 much__my:-47 much_of:-47 much_time:44 my:78 my__be:-76 my__changed:79 my__ends:73
my__put:-69 my_boss:48 my_calendar:61 my_kid:60 my_nephew:-53 my_number:87 my_shift:77 my_work:-74 myself:-59 n:117
n_how:70 nada:47 nada_$:-58 nada__eso:54 nada_de:53 nd:160 necesito:72 need:120 need__appointment:65 need__lift:-113
need__loaner:65 need__ride:-51 need__the:-54 need_an:62 need_the:44 need_to:-61 needed:-60 neither:47 nephew:-53
never:-63 new:-135 new_ones:-46 new_tires:-95 next:184 next_$:144 next__at:55 next__please:-51 next__would:-44
next_monday:54 next_thursday:-44 next_week:-46 ni__ni:81 ni_el:-63 night:-85 night_$:-89 night_and:-97 nights_$:-45
nine:82 ningun:-99 ninguna_me:56 ninguno:69 no_$:-145 no__all:73 no__de:-79 no__dia:46 no__drives:44 no__hoy:69
no__is:-44 no__lunes:47 no__manana:-71 no__otro:66 no__para:82 no__si:-46 no__viernes:146 no__yet:-73 no_but:-53
no_el:194 no_es:66 no_good:131 no_i:-85 no_idea:-73 no_le:81 no_noise:44 no_nomas:83 no_ocupo:-62 no_on:73
no_puedo:-49 no_quiero:-63 no_se:-169 no_sea:144 no_tiene:65 no_trabajo:127 no_voy:-116 nomas__de:86 noon:114
noon__is:51 noon_on:51 normal:47 not_now:-74 not_the:69 not_today:-67 nothing:61 now_$:86 now_maybe:-49 now_on:-48
nudge:-83 number_$:-51 nut:-63 o:-138 o__no:-52 o_como:-86 o_lunes:-73 o_mas:-53 o_no:-103 o_nomas:-44 o_si:-52
ocho:79 ocupo__para:102 of__but:94 of__day:47 of__month:61 of__week:-71 of_an:-82 of_april:68 of_march:114 of_my:-55
of_the:69 off:73 off__list:-87 off__on:-77 off_the:-81 off_work:-44 oigan:-65 oil_can:-48 oil_change:67 oil_on:50
ok:50 ok_ahi:-93 ok_if:44 ok_thanks:45 old:50 on__and:-47 on__it:62 on__morning:65 on__or:-44 on__th:-54 on__the:100
on_a:-145 on_friday:79 on_fridays:61 on_me:104 on_monday:-88 on_saturday:-77 on_saturdays:-122 on_sundays:-57
on_th:-58 on_the:78 on_thursday:127 on_tuesday:64 one:-48 one_$:-86 one__i:-57 one__the:95 one_of:90 one_please:-98
ones:-45 only:104 open:-61 open_$:222 open__me:64 open__the:46 open_for:64 open_tomorrow:-101 opening:65 opens:44
or:-78 or_$:-90 or_anything:-52 or_friday:-92 or_so:-44 ora:49 other:64 otra__el:-52 otra__en:45 otra_fecha:88
otro_$:-50 otro_carro:52 otro_dia:73 out:-83 out_at:95 oye:-47 para:112 para__de:68 para__en:89 para__lo:-91
para__lunes:-60 para__martes:-141 para__si:-89 para_cuando:98 para_despues:-47 para_el:-68 para_la:144 para_un:48
para_ver:-92 pasado_$:-52 pasado_manana:85 pasela:-45 paso:59 paso_manana:66 passed:-76 past:57 pedal:-56
pedal_is:-47 pero:95 pero__la:80 pero__las:99 pero__le:-60 pero__que:-97 pero_a:68 pero_el:63 pero_le:-109 pero_lo:52
pero_que:-50 phone__the:-44 pick:107 pick_up:-44 ping:-50 ping_me:-50 place:-135 please__i:64 please__is:46
please__me:-77 please_call:54 please_it:45 pleased:46 pm:115 pm_$:64 podria:146 podria__a:84 podria_ser:144
pongame:47 ponme:49 poquito:71 por__el:-59 por__la:128 por__manana:68 por__tan:-54 por__tarde:65 por_ahi:63
por_ahora:-47 por_fa:102 por_la:180 por_las:-98 por_que:-66 porque_el:-101 posible:104 posible_$:77 possible:52
possible_$:135 precio_$:-49 preferencia:54 pregunteme:-67 price_$:44 primero_que:-67 problem:67 pronto:96 pueda:84
pueda_$:117 puedan:102 puede_$:85 puede__el:77 puede_ser:-95 puedo:108 puedo__el:101 puedo__manana:66 puedo__mi:-73
puedo_a:51 puedo_el:109 puedo_esperar:-86 puedo_pasar:57 puedo_seguir:-50 puerco:-78 pull:50 put:-45 put_in:70
put_new:-46 put_on:-59 put_the:45 que:46 que__abren:124 que__cuando:76 que__de:52 que__despues:-52 que__es:-48
que__hacen:47 que__la:-131 que__lo:73 que__mas:52 que__me:52 que__que:-47 que__sea:51 que__si:-53 que__tienen:-56
que_cierren:51 que_era:-45 que_ese:56 que_horario:-44 que_lo:53 que_no:101 que_sigue:-64 que_tal:103 que_tengan:44
queda:-84 queda_$:-44 queda_de:57 quedamos:53 quedamos_$:68 quien_es:-49 quieran:101 quiero__cita:76 quiero__el:52
quiero__la:-84 quiero_ir:107 quisiera:55 rapido:59 rapido_$:53 rather_than:-130 rd:113 rd_$:175 re:65 receipt:-45
rechina:46 recoger:-79 recojo_a:-84 recorrer:-44 red:-78 regreso:46 regreso_a:52 remind:-63 remind__what:68
remind_me:-63 retired:72 ride__work:-71 ride_to:-71 right:61 right_$:-55 right__the:93 right__you:78 ring_me:60
road:47 road_trip:47 rolls:-69 room:68 rotation:66 rueda:-47 run:153 sabado:116 sabado_$:-102 sabado__las:47
sabado_a:47 sacar:44 said:-85 saldria:-55 sale_$:76 sale_humo:-105 salgo_de:-68 saliendo:96 saliendo_del:49
same_hour:91 sat:257 sat_$:-58 sat_morning:51 saturday:121 saturday_at:75 saturday_hours:-259 saturday_morning:108
saturdays:-59 saturdays_$:-91 say:-67 say__th:89 say_anything:-56 say_the:90 says_$:67 school:85 school__out:-57
school_lets:-58 se__a:-63 se__ese:50 se__para:-56 se__que:-53 se_acabe:64 se_les:48 se_lo:-77 se_me:56 se_pueda:168
se_puede:106 se_va:-66 sea:205 sea_$:54 see_me:55 seen:67 seguir:-50 semana:125 semana_$:93 semana__de:50
semana_de:45 semana_del:55 seria_$:-58 set:-82 set_$:-47 shakes:-126 shakes_at:-126 shes:-44 shift:-48 shift__at:96
shop:-117 shop_$:-124 si:62 si_$:-100 si__a:67 si__dejo:-121 si__el:-50 si__espero:-57 si__jueves:-120 si__llevo:-86
si__manana:67 si__martes:-72 si__mas:-49 si__para:45 si_a:68 si_gracias:65 si_hay:51 si_la:-99 si_llego:-48
si_lo:-181 si_me:46 si_paso:-44 si_si:48 si_voy:-84 sick:-55 siempre:-49 siempre_no:-103 sigue:-83 sigue_$:-58
siguiente:107 sin:-69 sipi:-69 sir:71 sneak:50 so:128 so__after:58 so__for:149 so__would:-52 so__you:-110 so_can:-106
so_how:-59 so_that:-73 so_thursday:123 soft:49 sold:44 solo:93 some:-57 some_time:44 something__come:-50
something__up:-64 something_came:-64 something_is:-73 somewhere:50 soon__you:126 soon_as:117 sooner__better:80
sooner_than:-114 sooner_the:80 soonest:101 sorry:79 sounds:-55 soy:101 st:129 start:66 still__the:-44 stop_$:-64
stop__me:-49 stop__this:54 stop_by:56 stop_in:50 su:62 su_horario:-46 sunday_$:-254 sunday_night:97 sunday_or:103
sunday_so:56 swap:-49 switch:-99 take_$:60 take_a:45 take_me:57 take_the:-94 takes:44 tal:122 tambien_le:53 tan:-77
tardan_$:48 tardar:52 tardar_$:52 tarde:-46 tarde_$:-114 tarde__a:62 tarde__no:-46 tarde_y:-44 tardes:44 tax:46
tax_$:46 te:-55 te_digo:-82 tell_you:-55 tempranito:58 tempranito_$:45 temprano_$:-44 ten:181 ten_$:132 tendra:67
tendran:88 tengan:165 tengo_cita:-47 tengo_que:-52 text__again:46 text_me:44 texts_$:65 texts_in:-54 th:135 th_$:-133
th__i:65 th__it:-45 th__me:-60 th__th:46 th_is:119 th_so:52 than:-113 that_$:62 that__a:44 that__be:-117 that__my:92
that__not:48 that_be:-48 that_can:-59 that_car:-51 that_day:249 that_off:-80 the:116 the_$:-48 the__after:100
the__any:45 the__appointment:-57 the__at:55 the__change:-64 the__do:-72 the__for:-102 the__friday:55 the__got:54
the__guy:-69 the__how:49 the__i:-97 the__is:45 the__light:68 the__like:77 the__on:-129 the__one:-46 the__or:122
the__please:64 the__slot:-64 the__text:-69 the__the:79 the__through:45 the__thursday:58 the__to:85 the__too:68
the__what:-76 the__you:-73 the_am:-111 the_baby:77 the_bank:83 the_better:136 the_bill:-50 the_brakes:56 the_bus:75
the_calendar:-54 the_coffee:49 the_corner:65 the_day:-44 the_earlier:51 the_early:120 the_engine:-45 the_evening:61
the_friday:-173 the_inspection:-53 the_kids:47 the_list:-64 the_monday:-73 the_month:62 the_nd:156 the_new:-45
the_next:207 the_night:85 the_oil:62 the_one:-78 the_pedal:-48 the_place:-80 the_pm:-54 the_rd:64 the_school:96
the_sooner:58 the_st:94 the_street:55 the_th:225 the_thing:-81 the_third:-76 the_thursday:-81 the_tires:-61
the_work:-51 the_wrong:-60 then:109 there:-66 there__a:-49 there__to:-45 there_a:-59 there_is:-56 there_on:-115
thing:-112 thing_$:-72 think_$:-61 third:-47 thirty:47 this_$:-51 this__the:-60 this_afternoon:63 this_is:-84
this_month:-51 this_morning:-49 this_weekend:64 those:122 those_$:-92 though:53 thurs:45 thurs_$:-47 thurs_after:99
thurs_at:-44 thursday:-49 thursday__be:46 thursday__friday:-124 thursday__is:82 thursday__work:63 thursday_and:-47
thursday_at:73 thursday_but:170 thursday_friday:-110 thursday_what:78 thursday_works:-77 thursday_would:46
tiene__el:102 tienen:77 tienen_$:149 tienen__de:-61 tienen_lugar:48 till:-77 till__time:-52 time:-63 time__i:-86
time__the:-64 time__week:-50 time__you:79 time_for:-56 tio:-49 tipo:98 tipo_$:70 tires__on:-93 tmrw:102 to__and:-53
to__at:-71 to__for:69 to__i:54 to__it:59 to_be:68 to_friday:-77 to_get:84 to_me:77 to_monday:-82 to_my:49 to_need:77
to_put:85 to_see:-44 to_stop:-51 to_take:100 to_the:-75 toda_la:-45 todas:45 today:80 today_$:-112 told:-61
tomorrow_$:-69 tomorrow__do:-74 tomorrow_at:76 tomorrows:-65 tonight_$:-58 top:-67 trabajan:-143 trabajo:139
trabajo_el:91 trae_millas:65 trae_un:-45 trip:75 try:-222 try_me:-202 tu:-155 tues:96 tuesday:59 tuesday_$:87
tuesday__is:-45 tuesday__th:-52 tuesday__the:62 tuesday__wednesday:-59 tuesday_so:-106 tune:47 tune_up:47 turno:122
turns:-96 turns_out:-96 two_$:-120 two_hours:64 two_hundred:-52 two_weeks:46 ultima:46 un:119 un__de:102 un__el:62
un__en:-52 un_dia:-47 una_cita:136 una_hora:-104 una_llamada:-44 una_maquina:52 una_persona:52 unas:-62
unas_semanas:-85 under:-54 unos:-61 up:-119 up_$:72 up__a:48 up__the:55 up__we:-64 up_can:-64 up_my:-58 up_the:-53
urge:45 use:-67 used:-79 ustedes__el:-55 ustedes_me:67 va_$:71 va_a:-115 va_el:44 ver_el:47 verano:-52 verdad:50
verde:-65 vez_de:-48 vez_en:45 viene:-46 viene_el:-135 viernes:76 viernes_$:-141 viernes__de:47 viernes__favor:-72
viernes__las:-173 viernes__me:61 viernes__que:135 viernes_de:-68 viernes_pero:58 vivo:69 voy__la:45 voy_a:-66
voy_el:77 voy_saliendo:50 voz:-66 vueltas:-61 wait_$:56 wait__it:53 wait_for:73 wait_on:-81 want_the:-60 was:-56
was_$:-44 way:-73 way__the:71 we:-52 we__a:63 we__instead:179 we__it:-164 we_are:-48 we_do:48 we_make:-91 wed:206
wed_at:54 wednesday_$:63 wednesday_is:79 weds:72 week:59 week_$:111 week__april:59 week__the:-71 week_after:115
week_of:56 weekday:44 weekend:82 weekend_$:48 weekends:-86 went:-74 were:-54 what_$:-59 what__an:-51 what__my:-47
what__the:87 what__you:62 what_about:283 what_are:-65 what_else:75 what_i:-84 what_time:-134 whatever:97 when__i:-48
when_my:54 when_you:50 whenever:46 whens:-61 whichever:101 white_one:46 why:58 why_not:110 wife:64 will__be:-53
will__have:-75 will__it:50 wipers:44 with_it:58 with_me:-81 with_tax:51 with_the:148 wk:54 woke:-46 wont_go:62
wont_make:-76 work_$:159 work__the:-73 work_from:69 work_on:-114 works_but:-98 worse_than:48 would__be:-106
would__better:93 would__have:86 would__that:-65 would__to:56 would_be:92 would_i:-92 would_it:-63 would_you:58
write:-104 wrong:-48 wrong_guy:-44 y:136 y__me:56 y__no:-89 y__va:-47 y_cuanto:-69 y_de:45 y_eso:-88 y_las:85
y_lo:-97 y_que:62 y_va:182 y_ya:81 ya__la:48 ya__lleve:-50 ya__me:-58 ya_casi:93 ya_la:-64 ya_no:-178 ya_quedo:-65
yeah__it:-46 year:-60 yes_$:-91 yes__i:-81 yes__please:168 yes__the:-54 yes__works:-103 yes_and:-49 yes_but:-58
yet:-199 yet__me:-161 yo:155 yo__a:47 yo__el:-44 yo_la:47 you:69 you__a:-84 you__and:46 you__anything:48
you__before:-50 you__im:139 you__it:-117 you__me:57 you__monday:65 you__my:-86 you__now:149 you__on:-131 you__open:85
you__that:45 you__the:47 you__what:-126 you_can:133 you_check:-53 you_close:99 you_closed:46 you_do:132 you_got:116
you_have:134 you_in:-109 you_move:-50 you_open:-59 you_pick:72 you_said:-44 you_see:85 you_take:55 you_tell:50
you_there:-118 you_want:-58 you_work:-94 youd:82 your__for:103 your__hours:-136 your_saturday:-60
"""
