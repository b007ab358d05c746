"""What speaks for and against `accept`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "accept"
BIAS = -90
WEIGHTS = """\
#abal:89 #aber:-57 #abri:97 #acci:-57 #acem:73 #acen:-69 #acep:212 #acer:116 #acha:-102 #acio:-66 #adie:-60 #adit:61
#ador:-81 #afir:62 #afue:74 #agal:131 #agam:144 #agre:97 #aguj:58 #ahea:127 #ains:-69 #aint:59 #ajaj:-59 #ajan:-81
#ajer:-67 #akes:-65 #alab:66 #alar:83 #algo:-106 #alio:-88 #alir:71 #alki:100 #alla:220 #alle:68 #almo:-70 #alor:68
#also:68 #alto:98 #ambi:59 #ambo:111 #amen:63 #ampo:-77 #anad:-56 #ance:-80 #andi:-68 #andm:-116 #ando:-65 #ands:92
#ange:58 #anme:122 #anot:-68 #anto:-78 #ants:-73 #anul:-76 #anyh:70 #anym:-61 #apar:157 #apia:60 #appe:-122 #appi:81
#appy:118 #apto:59 #apun:164 #aran:-66 #arar:56 #arav:58 #ared:76 #arki:73 #arle:100 #arma:85 #arne:86 #aron:-149
#arra:82 #arri:157 #arte:99 #arth:129 #ased:72 #asis:-63 #atal:-145 #atch:-81 #ated:-76 #aten:-63 #athe:-91
#atte:-115 #augh:89 #aunq:81 #avad:73 #avan:-96 #avil:58 #aybe:-110 #azul:143 #babe:-144 #bano:-57 #bast:-65 #bble:64
#bcap:-62 #bear:123 #beat:-62 #bell:120 #bett:62 #biad:89 #biem:-111 #bien:-84 #bios:84 #bird:-94 #blem:92 #blue:86
#boat:-88 #book:76 #bres:183 #bril:-74 #brok:-58 #bsup:65 #buen:75 #bvio:197 #caba:65 #cada:-56 #caer:-88 #calo:68
#came:-56 #canc:-76 #card:-96 #caro:-183 #cele:82 #cell:92 #cend:60 #cept:95 #cerl:118 #cert:128 #chee:-66 #chev:145
#chid:84 #cito:79 #cker:-69 #ckin:-84 #clar:154 #clie:-70 #cogi:-61 #colo:72 #comp:-107 #conf:74 #conv:74 #corr:-63
#coun:82 #cour:58 #cous:-56 #crib:-79 #cuan:64 #cuar:-69 #cuen:66 #cues:78 #cuna:65 #dale:203 #dame:129 #dand:-57
#dara:122 #darl:137 #date:88 #days:-184 #deal:-82 #defi:58 #deja:-112 #dejo:-113 #dele:349 #demo:-60 #dent:-81
#depe:-81 #desd:-142 #devu:78 #dias:-81 #didn:-95 #diga:169 #digo:-100 #dije:-85 #dijo:86 #dine:-94 #ding:-67
#dinn:-64 #dirt:-75 #disc:-77 #dito:61 #dobl:-62 #doke:115 #dolo:72 #domi:-57 #done:88 #dont:123 #dore:62 #doub:507
#down:-63 #drag:65 #draw:-72 #drea:80 #dude:143 #dura:-87 #each:-81 #eady:85 #eage:-129 #eali:-66 #eals:-82 #earn:72
#ears:63 #eart:129 #ease:-85 #eate:-83 #ecal:-103 #ecei:-72 #ecer:77 #ecit:-68 #ecti:121 #ecto:59 #edad:106 #edan:99
#edar:93 #eeds:61 #eeps:-79 #eers:-81 #efec:-76 #efin:58 #egad:-86 #egar:87 #egas:-62 #egla:-82 #egle:78 #egre:-57
#egui:84 #ejal:-114 #ejar:64 #elar:56 #elen:125 #elli:-80 #ello:90 #else:-134 #elta:-77 #emel:-80 #emem:82 #empe:-65
#enar:-64 #ence:95 #enci:117 #enia:-106 #enme:-100 #enor:72 #enos:79 #ense:88 #ensi:-56 #enso:93 #ente:137 #epen:-112
#eque:158 #equi:-78 #erad:-77 #eran:121 #erap:60 #erda:-84 #erde:-73 #erdi:-105 #erdo:69 #erec:58 #eres:110 #erla:-74
#ermo:63 #eron:-92 #erra:-68 #erro:82 #erta:149 #erte:110 #esch:-98 #esde:-142 #esen:56 #eseo:89 #esim:-61 #espa:-104
#esta:59 #estr:61 #estu:-71 #etan:143 #etes:58 #etic:-72 #ettl:76 #evue:78 #eway:-67 #fall:102 #falt:168 #fier:69
#fije:-71 #fill:-58 #find:-139 #fine:-63 #fini:70 #firm:185 #flui:-64 #forg:-152 #fort:91 #foto:-57 #freg:-91
#fron:59 #full:-88 #game:108 #gamo:58 #garr:67 #gato:-68 #gend:123 #gets:135 #ghbo:70 #ghte:99 #ghty:232 #ging:-74
#gist:148 #give:-99 #glad:58 #gold:67 #gote:-60 #grab:98 #gree:82 #grin:62 #gual:-74 #guan:-74 #gues:124 #guie:-68
#guja:58 #guna:65 #guno:-143 #gunt:-67 #guro:-63 #haga:186 #hake:-84 #hall:94 #happ:88 #hari:-66 #hasn:93 #hbor:70
#hear:-96 #hech:63 #heer:-66 #hell:87 #herm:60 #heve:145 #hich:-62 #hido:84 #high:56 #hine:107 #hing:83 #hird:-98
#hite:74 #home:-110 #hook:61 #hops:101 #hors:95 #houg:103 #hour:-56 #hous:-61 #hrou:-66 #hubc:-62 #huev:86 #humi:-72
#humo:-103 #hurt:82 #husb:57 #iado:70 #iarl:-88 #iaro:62 #iban:68 #iben:-67 #icad:-74 #icey:100 #iddi:63 #idea:117
#ider:82 #idnt:-95 #iejo:78 #iemb:-69 #ieme:-111 #iend:-126 #iens:84 #iera:68 #iere:-66 #iert:69 #ifes:67 #ighb:70
#igua:-74 #igui:-60 #ijer:-71 #iked:115 #iler:-74 #ille:-60 #imag:-88 #imon:227 #impi:56 #inde:64 #ined:-67 #iner:-84
#init:58 #inne:-64 #inst:-87 #insu:-59 #into:57 #ints:56 #ions:-100 #irma:105 #irty:-71 #isco:-56 #ised:-103 #isen:60
#issu:65 #iste:108 #itid:59 #itio:63 #ives:98 #jala:136 #jale:119 #jalo:252 #jelo:58 #jera:-81 #jero:-57 #jita:63
#juic:69 #kidd:63 #kids:-57 #kind:84 #labr:66 #lada:108 #lado:-71 #laid:105 #lanc:89 #lann:121 #lapt:59 #larl:116
#larm:109 #laro:157 #last:-59 #late:-79 #lava:72 #ldnt:121 #leag:56 #leas:-70 #left:-92 #lena:-68 #lend:104 #lers:-66
#less:100 #lets:-68 #leva:62 #levo:-71 #lica:-67 #lico:-122 #lida:91 #lide:-75 #lied:-115 #like:68 #limp:-84
#ling:-61 #lisi:-70 #lite:56 #lked:58 #lkin:100 #llas:-93 #llin:116 #llow:75 #llue:-74 #lmos:-70 #look:59 #lora:61
#loud:-73 #ltar:72 #lueg:-96 #luev:-74 #luid:-64 #lver:-64 #lyin:-66 #made:-124 #mage:-59 #mand:-65 #mani:-71
#mano:-68 #mant:126 #mart:-67 #mati:79 #matt:-77 #mayb:-110 #mbio:111 #mble:73 #mbos:111 #mbsu:65 #mean:81 #mela:-103
#memb:82 #mend:57 #merc:97 #meta:81 #migh:87 #mijo:59 #milk:-147 #mill:-69 #mire:70 #miss:94 #mito:-87 #modo:80
#mone:-62 #moot:75 #moto:-63 #mpla:184 #mpre:-60 #mpro:-62 #muev:-57 #nadi:-60 #nail:111 #nals:-57 #ncel:-76
#ncon:-60 #ndam:162 #ndan:-65 #ndar:66 #ndel:108 #ndid:78 #ndit:78 #ndma:-116 #ndol:71 #neig:70 #neit:-171 #nero:-83
#ners:-76 #nest:68 #news:118 #next:73 #nged:63 #ngel:-63 #nges:59 #nice:-57 #niev:83 #nimo:260 #nino:56 #nite:58
#niti:59 #nles:61 #nloc:59 #nner:-118 #none:-74 #nque:62 #nsid:75 #nste:-63 #nsur:-59 #nten:62 #nter:-71 #ntes:60
#ntit:-61 #ntos:-60 #ntua:82 #nyho:70 #nymo:-61 #oast:78 #oble:78 #obre:158 #obvi:197 #ocal:72 #ocki:-67 #ocks:56
#olle:-90 #olor:90 #olve:-64 #omas:59 #ompl:124 #ompr:-141 #oner:-88 #oney:-148 #onte:65 #onto:-74 #onve:57 #ooki:-58
#ooks:56 #oone:-59 #ooth:75 #open:114 #oral:111 #orda:56 #ords:-88 #orgo:-81 #orks:-77 #orra:-76 #orta:59 #orth:-57
#orto:-64 #orty:94 #osed:-99 #osto:61 #otea:-58 #otem:58 #othi:79 #otra:66 #oubl:-65 #oull:68 #ound:-64 #ousi:-56
#ouve:56 #paci:-88 #pado:-100 #padr:94 #pala:66 #pana:56 #parc:84 #pase:-82 #pass:-117 #pelo:65 #pena:-70 #pend:-87
#peni:91 #peor:-61 #pera:60 #perd:-102 #pers:65 #pesi:-61 #pide:64 #pien:84 #pier:112 #pink:75 #plan:97 #plea:-84
#plic:-72 #pode:-74 #podr:-70 #pone:-152 #pong:-86 #port:-100 #pose:87 #pour:-99 #ppen:-111 #ppie:81 #ppos:87
#preg:-67 #prob:166 #ptop:59 #pues:131 #punt:176 #purr:117 #quej:159 #ques:-79 #ract:-65 #rade:-95 #rail:-74
#rale:111 #rano:-63 #rapi:69 #rara:-103 #rase:-63 #rath:-88 #ravi:58 #raya:-75 #rbag:-56 #rdam:56 #rdes:66 #reag:-154
#reco:-74 #rect:101 #reed:57 #rega:-123 #regr:-57 #regu:-99 #remo:-96 #rent:-110 #resa:123 #resc:-98 #rged:-61
#rgot:-81 #rico:-61 #righ:114 #rind:62 #ring:63 #rint:-65 #rise:60 #rite:73 #rkin:58 #rlos:66 #rmat:79 #rned:62
#robl:107 #roke:-58 #roll:88 #rops:-74 #roto:-58 #roub:76 #rrar:90 #rrec:151 #rrer:-64 #rrin:97 #rros:-79 #rses:82
#rten:82 #rtes:-91 #rtid:-69 #ruck:57 #runn:-83 #sale:-106 #sant:-65 #saro:-65 #sati:97 #sban:57 #scar:107 #scri:-79
#seda:145 #segu:66 #seni:-64 #seno:104 #sent:69 #sett:147 #shak:-60 #shal:94 #shie:-59 #shin:66 #ship:-56 #shut:-75
#sica:-95 #side:98 #siet:60 #sign:112 #sigo:-64 #simo:121 #sing:-59 #sipi:125 #sist:-69 #sita:77 #skip:-72 #slid:-75
#slow:-58 #smoo:75 #soun:-107 #spac:-115 #spot:57 #ssed:-66 #ssin:-59 #ssir:152 #ssue:65 #stan:-67 #stas:122
#stea:-102 #stee:-63 #ster:-61 #stir:-61 #stuv:-71 #suav:58 #subi:-58 #suel:-73 #suen:60 #sues:89 #suit:-60 #supu:65
#sura:-86 #tain:105 #take:-59 #tamb:88 #tant:-82 #tapo:-58 #tare:184 #tars:85 #tcha:201 #tead:-63 #teer:-63 #tely:94
#teme:132 #tena:-80 #tend:-72 #tere:168 #teri:-60 #text:-98 #tful:-62 #ther:-63 #thes:95 #they:-64 #thin:75 #thir:-93
#thou:56 #thro:-58 #time:57 #tiva:80 #tmrw:-66 #todo:104 #tomo:76 #took:-73 #tope:-62 #topp:57 #tory:86 #trac:-57
#traf:-71 #trai:-100 #tree:-77 #trel:84 #tren:-68 #tres:-63 #trip:62 #tron:-62 #trou:76 #tsid:59 #tues:-115 #turn:-73
#twis:103 #uave:58 #ubca:-62 #uble:-65 #ucti:-62 #ueda:-88 #uede:-87 #uedo:101 #ueja:123 #uelo:-80 #uelt:-74
#uena:114 #uere:-71 #uert:85 #uess:124 #ueve:-121 #uevo:115 #uide:66 #uien:-115 #uiet:84 #uldn:121 #ulli:135
#ulls:-93 #umit:-72 #unad:65 #unds:-59 #unlo:59 #unni:-83 #unqu:72 #unto:105 #untu:88 #upad:-100 #uper:71 #uppo:69
#upue:65 #urin:-69 #urrs:117 #urse:74 #usba:57 #usin:-56 #usta:105 #uste:-148 #usto:-80 #utsi:59 #utte:61 #vame:105
#vamo:249 #varl:79 #vega:-62 #vemo:104 #venc:98 #vend:-119 #vent:-69 #vere:117 #vers:-63 #vide:-73 #viej:100 #vill:58
#ving:-77 #vise:60 #volv:-81 #walk:125 #wasn:-81 #wate:65 #wear:59 #week:-139 #well:128 #went:-60 #were:96 #when:-158
#whic:-60 #whit:74 #wife:66 #wild:120 #will:73 #wist:103 #work:-73 #wors:-153 #xcel:82 #xcep:-84 #xpla:-65 #yess:152
#yhow:70 #ying:-56 #ymor:-61 #youl:68 #youv:56 %again_later:-95 %again_later%agree:74 %again_later%away:-63
%again_later%bad:-98 %again_later%car:86 %again_later%how_long:-77 %again_later%leak:-122 %again_later%machine:112
%again_later%message:-210 %again_later%money:66 %again_later%odometer:92 %again_later%place:-58
%again_later%season:112 %again_later%shake:-112 %agree:419 %agree%bring:127 %agree%busy:146 %agree%car:99
%agree%doubt:240 %agree%elsewhere:138 %agree%fails:107 %agree%family:94 %agree%gone_car:168 %agree%how_long:163
%agree%lift:132 %agree%meaning:75 %agree%noise:117 %agree%odometer:63 %agree%phone:143 %agree%place:60
%agree%question:82 %agree%season:196 %agree%shake:91 %agree%shift_it:79 %agree%smoke_smell:71 %agree%staff:178
%agree%start_again:58 %agree%thanks:-145 %away:-151 %away%bring:64 %away%car_part:116 %away%doubt:-97 %away%fails:68
%away%how_long:72 %away%leave_me:135 %away%message:56 %away%noise:89 %away%opening:64 %away%question:60
%away%refuse:109 %away%shake:-75 %away%start_again:60 %away%thanks:180 %away%wrong_one:75 %bad:-167 %bad%bring:56
%bad%busy:64 %bad%car_part:-120 %bad%gone_car:73 %bad%meaning:139 %bad%refuse:286 %bad%season:-56 %bad%shift_it:83
%bad%start_again:-117 %bad%wrong_one:75 %bring%call_off:90 %bring%car_part:113 %bring%family:153 %bring%how_long:-100
%bring%leak:58 %bring%lift:-76 %bring%meaning:108 %bring%odometer:-141 %bring%phone:105 %bring%season:-108
%bring%thanks:85 %bring%who:-96 %bring%wrong_one:126 %busy%gone_car:-81 %busy%message:104 %busy%on_way:-118
%busy%question:71 %busy%refuse:-128 %busy%shift_it:-57 %busy%staff:134 %busy%start_again:63 %call_off:-133
%call_off%car:-87 %call_off%doubt:165 %call_off%fails:-103 %call_off%how_long:99 %call_off%money:-96
%call_off%opening:-96 %call_off%pay_day:-90 %call_off%refuse:157 %call_off%shake:-64 %call_off%thanks:-63
%car%doubt:57 %car%elsewhere:146 %car%family:-69 %car%gone_car:-77 %car%how_long:-60 %car%leave_me:101
%car%message:109 %car%noise:131 %car_part:-118 %car_part%do_it:105 %car_part%elsewhere:-59 %car_part%how_long:75
%car_part%odometer:128 %car_part%phone:78 %car_part%place:58 %car_part%question:103 %car_part%season:102
%car_part%shake:117 %car_part%smoke_smell:79 %car_part%thanks:77 %car_part%who:64 %do_it:-57 %do_it%elsewhere:-76
%do_it%fails:-99 %do_it%how_long:-88 %do_it%leave_me:134 %do_it%message:73 %do_it%money:-198 %do_it%on_way:-113
%do_it%phone:96 %do_it%question:-101 %do_it%refuse:142 %do_it%shift_it:77 %do_it%start_again:-78
%do_it%wrong_one:-149 %doubt:-72 %doubt%elsewhere:-59 %doubt%family:-57 %doubt%gone_car:-108 %doubt%how_long:85
%doubt%lift:66 %doubt%on_way:86 %doubt%question:-71 %doubt%refuse:-158 %doubt%who:100 %elsewhere%message:-62
%elsewhere%place:99 %elsewhere%question:72 %fails%gone_car:60 %fails%how_long:-77 %fails%phone:66 %fails%staff:69
%fails%start_again:-70 %family:-105 %family%question:108 %family%shift_it:67 %family%staff:-56
%family%start_again:-77 %gone_car:-205 %gone_car%how_long:-126 %gone_car%meaning:114 %gone_car%message:-59
%gone_car%money:116 %gone_car%question:148 %gone_car%refuse:124 %gone_car%season:-76 %gone_car%staff:-126
%gone_car%thanks:-78 %gone_car%wrong_one:84 %how_long:-79 %how_long%leave_me:113 %how_long%odometer:-73
%how_long%opening:107 %how_long%place:-74 %how_long%question:131 %how_long%refuse:-112 %how_long%shift_it:-75
%how_long%staff:-64 %how_long%start_again:62 %leak:-60 %leak%on_way:70 %leak%start_again:-59 %leave_me:-163
%leave_me%on_way:111 %leave_me%opening:59 %leave_me%question:64 %leave_me%smoke_smell:60 %leave_me%thanks:-105
%lift%on_way:-71 %lift%refuse:-80 %lift%who:69 %machine:-66 %machine%money:60 %meaning%noise:-144 %meaning%phone:-62
%meaning%question:-80 %meaning%refuse:132 %message%money:74 %message%phone:58 %message%question:98 %message%staff:66
%message%start_again:-178 %message%thanks:114 %message%wrong_one:-104 %money%noise:83 %money%odometer:-67
%money%on_way:72 %money%question:74 %money%refuse:-113 %money%shift_it:86 %money%smoke_smell:-74 %noise%on_way:-86
%noise%question:-66 %noise%refuse:123 %noise%staff:-76 %noise%start_again:-121 %odometer%on_way:-68
%odometer%opening:63 %odometer%place:62 %odometer%refuse:-86 %odometer%shift_it:-56 %odometer%start_again:-80
%on_way:-71 %on_way%refuse:122 %on_way%smoke_smell:57 %on_way%staff:67 %on_way%thanks:164 %on_way%wrong_one:61
%opening:-71 %opening%place:-57 %opening%question:64 %opening%refuse:-73 %opening%shift_it:-76 %pay_day:-111
%pay_day%question:-143 %pay_day%season:-62 %phone:-204 %phone%question:58 %phone%refuse:-133 %phone%start_again:57
%place:-85 %place%question:74 %place%season:-78 %place%shake:-80 %place%shift_it:118 %place%staff:101
%place%start_again:80 %place%who:90 %question:-109 %question%refuse:114 %question%season:72 %question%staff:-58
%question%start_again:130 %question%thanks:100 %question%who:-80 %question%wrong_one:75 %refuse:-110
%refuse%staff:-77 %refuse%wrong_one:60 %season:-116 %shake:-108 %shake%thanks:95 %shift_it:-135 %shift_it%staff:-74
%shift_it%start_again:-62 %shift_it%thanks:89 %smoke_smell:-89 %start_again%thanks:-79 %thanks:-62
%thanks%wrong_one:83 %who:-119 %wrong_one:-119 @after_visit:214 @after_visit_cant_complain:80 @car:407 @confirm:154
@confirm_:65 @confirm_stop:-675 @day:-77 @later:-62 @nothing:-385 @odometer:-147 @offers:-741 @time:-95 @walk_in:189
^_$:80 ^_aceptan:-103 ^_afirmativo:61 ^_after:-105 ^_ahi:262 ^_all:99 ^_alright:259 ^_alto:-61 ^_am:-136 ^_ambos:73
^_and:-95 ^_antes:-83 ^_any:-109 ^_appreciate:-130 ^_are:-108 ^_asi:111 ^_at:-70 ^_ay:-68 ^_be:-216 ^_before:-100
^_bendiciones:-142 ^_better:111 ^_blue:108 ^_bring:72 ^_bueno:109 ^_by:90 ^_call:-79 ^_can:-61 ^_cancelar:-59
^_cant:77 ^_changed:-93 ^_chevere:165 ^_claro:239 ^_como:72 ^_con:56 ^_confirmado:86 ^_confirmo:209 ^_correct:69
^_could:-113 ^_count:65 ^_cual:-127 ^_cualquier:-73 ^_cuando:-189 ^_cuanto:-283 ^_dale:145 ^_de:124 ^_definitely:58
^_dejelo:74 ^_does:-82 ^_donde:-115 ^_el:-143 ^_en:-146 ^_end:-70 ^_es:-64 ^_eso:84 ^_esta:182 ^_estamos:-119
^_este:-66 ^_estoy:-108 ^_eta:-58 ^_everything:125 ^_excelente:78 ^_fine:306 ^_for:81 ^_friday:-151 ^_go:139
^_going:73 ^_good:-61 ^_gracias:-72 ^_hagale:62 ^_half:-118 ^_hang:-58 ^_happy:92 ^_hasta:101 ^_have:-98 ^_hay:-56
^_hello:-68 ^_hm:-137 ^_how:-269 ^_hoy:-79 ^_i:-57 ^_id:167 ^_if:115 ^_in:-62 ^_is:-221 ^_jajaja:-59 ^_kids:-132
^_las:88 ^_late:-72 ^_let:-94 ^_liked:116 ^_listo:135 ^_llevo:-70 ^_lol:-133 ^_luego:-105 ^_manana:-256 ^_martes:-94
^_mas:-67 ^_meh:-140 ^_mejor:105 ^_mi:-107 ^_miercoles:-63 ^_might:87 ^_miles:77 ^_monday:-72 ^_move:-67 ^_much:-66
^_muy:131 ^_nah:-76 ^_need:-97 ^_neither:-172 ^_nel:-78 ^_next:-187 ^_ninguno:-143 ^_nomas:-120 ^_none:-74 ^_nop:-77
^_not:-132 ^_nothing:-59 ^_of:103 ^_ok:314 ^_on:-66 ^_once:-96 ^_one:-93 ^_or:-65 ^_orale:111 ^_para:-105
^_pasado:-83 ^_paso:-158 ^_perdon:-89 ^_perfect:181 ^_perfecto:184 ^_pesimo:-97 ^_please:134 ^_price:-81 ^_puede:-61
^_puedo:-161 ^_pues:-81 ^_que:-184 ^_quedo:207 ^_quiero:-94 ^_rain:102 ^_re:162 ^_ring:-79 ^_runs:101 ^_sabado:-75
^_sale:373 ^_sat:-68 ^_saturday:-140 ^_se:-153 ^_see:316 ^_seguro:153 ^_sera:72 ^_si:568 ^_sigue:70 ^_simon:174
^_sin:140 ^_sipi:125 ^_smooth:71 ^_sold:189 ^_solo:64 ^_something:-79 ^_sometime:-68 ^_sounds:264 ^_still:199
^_stop:-191 ^_sure:343 ^_sweet:88 ^_tengo:-69 ^_thank:-305 ^_that:223 ^_there:-80 ^_thumbsup:65 ^_thurs:-171
^_thursday:-242 ^_thursdays:-61 ^_tire:-57 ^_tmrw:-57 ^_todo:132 ^_tomorrow:-135 ^_trae:-86 ^_train:-79 ^_truck:107
^_tuesday:-126 ^_un:-81 ^_va:257 ^_viernes:-111 ^_waiting:-59 ^_was:-64 ^_wed:-72 ^_wednesday:-59 ^_what:-362
^_whenever:-77 ^_where:-93 ^_which:-109 ^_white:102 ^_who:-64 ^_wont:-154 ^_works:279 ^_would:-84 ^_wouldnt:145
^_ya:106 ^_ye:170 ^_yeah:143 ^_yep:228 ^_yes:142 ^_yessir:152 a_$:109 a__cuando:98 a__en:124 a__for:60 a__hora:-81
a__in:-84 a__is:125 a__la:113 a__late:-74 a__lo:-56 a__no:-96 a__of:-58 a__or:-71 a__out:171 a__que:-74 a__sale:-59
a__se:69 a__si:-89 a__time:-64 a__to:132 a__with:-57 a_bird:-61 a_boat:-88 a_como:-57 a_esa:-64 a_fallar:69
a_hacer:-181 a_huevo:86 a_hundred:68 a_little:-70 a_mediodia:-59 a_place:69 a_primera:88 a_problem:-90 a_quarter:59
a_salir:74 a_whole:58 about_how:-72 about_to:81 abren_$:89 abril:-74 add:145 adelante:130 adelante_$:156
afirmativo:61 after_$:-56 after_all:-59 after_that:-92 after_the:61 afuera:74 afuera_$:117 again__it:98 agarrar:61
agendeme:138 agendeme_$:138 agreed:57 aguja:58 ahead:127 ahead_of:-92 ahi:226 ahi_$:-219 ahi__a:60 ahi__con:77
ahi_estare:91 ahi_estoy:185 ahi_les:81 ahi_me:74 ahi_voy:177 aire_$:-57 al__no:-56 al__y:-61 al_carro:63
al_mediodia:82 al_viernes:-64 alarms:101 alcanzo_a:108 all__for:157 all__what:68 all_good:174 all_right:84
all_set:-60 alla:118 almost:-70 already__it:-72 already__the:73 alright:-183 also:68 alto:-76 ambos:111
an_appointment:194 and:81 and__am:-68 and__in:66 and__like:84 and__other:-56 and__there:92 and__to:63 and__was:59
and__you:80 and_back:68 and_could:99 and_ill:-125 and_no:168 and_out:93 and_thank:80 and_yes:70 and_you:-79
ando__el:61 ando_bien:-78 ando_por:-106 anos:66 anoteme:58 another:-125 another_time:-69 answer:-61 antes__que:78
antes_para:87 anyhow:70 anymore:-61 anymore_$:-71 appointment_$:101 appointment_i:59 appreciate:78 appreciate_it:-199
appreciate_you:-105 april_$:-80 apunteme_$:97 apunten:-56 aqui_no:-74 are_$:57 are__doing:79 are__for:94 are_they:75
arm:109 arm_$:68 as__as:-64 as__have:125 as_i:61 as_soon:-61 as_well:-62 asi:-139 asi__bien:-80 asi__dejo:-82
asi_es:197 ask_me:127 ask_my:-72 at__be:-80 at__good:-100 at__what:62 at_a:59 at_all:96 at_home:-111 at_it:76
at_k:-77 at_nine:124 at_or:56 at_ten:75 at_the:-137 at_would:-69 atras:145 aun:-104 aunque:72 avisar_$:-60 ay:-68
azul:105 azul_ya:-73 b:-61 babe:-144 back__a:79 bad:139 bad_$:84 banda:-97 bano:-57 be_$:74 be__at:-81 be__by:-138
be__for:-67 be__late:-58 be__my:71 be__you:74 be_by:-105 be_coming:-69 be_late:-85 be_on:-78 be_out:67 be_there:95
beat__to:-103 been__a:-80 been__to:57 been_done:77 before_$:-71 before__say:-116 before_i:-159 bells:64
bendiciones_$:63 bendiga_$:-85 bet:129 better:62 better_than:105 bien:-148 bien__la:-59 bien__que:-114 bien_feo:-68
bien_gracias:100 bien_lo:68 blanca_$:-68 blanca__la:119 blanco:57 bless:-94 blocking:-67 blocks:56 blue:86 boat:-88
book:241 book_it:141 book_me:231 booking:-75 both:59 box_$:67 brakes__like:56 break_down:83 bring:73 bring__in:103
bring_it:133 bring_the:74 btw:208 btw_$:58 buena:62 but:84 but__is:-115 but__it:60 but__much:-193 but__need:92
but_dont:91 but_have:59 but_how:-132 but_it:-73 but_no:-125 but_sure:73 but_the:-210 but_yes:90 butter:61 by_$:103
c:200 cada:-56 cae:-73 cafe_$:66 caigo_$:192 caigo_manana:-162 calendar:81 call__about:64 call__i:76 call__me:80
call__my:-57 calor:68 cambiado:110 cambiaron:62 cambieme:-106 cambieme_la:-70 cambio_de:-90 cambios:84 came:-61
camina:63 camioneta_blanca:59 campo:-77 can:-108 can__come:-58 can__do:-158 can__get:-78 can__make:225 can__on:80
can__stop:75 can__the:-57 can_do:-57 can_text:-83 cancel:-195 cancel_$:59 cancel_it:-396 cancel_my:135
cancel_the:-121 cancelen:117 cancelled:56 cant__in:-82 cant__it:-117 cant__that:63 cant__you:60 cant_come:-137
cant_complain:80 cant_do:-201 cant_say:123 cant_swing:-63 cant_wait:220 car:-111 car_$:77 car__like:71 car_is:-122
card:-95 caro:-183 caro_$:-65 carro__lo:-82 carro_a:-67 carro_azul:66 carro_de:65 carros:-79 carros_$:-65 cash:64
casi_llego:-77 casi_no:102 cat:82 center:-84 cerca:-57 cerca_$:-141 change_$:184 change_it:-84 changed_$:133
changed__mind:-106 changed__my:74 changed_my:-106 changed_on:74 changes:59 cheers:-66 cheers_$:-66 cheque:109
chevere:129 chido:84 cierran:-63 cita_$:-149 claro:170 claro__si:-136 claro_que:-64 come__it:-66 come__the:102
come_by:62 come_friday:-134 coming_$:-56 coming__the:79 como_$:-111 como__me:-106 como_cuanto:-58 como_esta:103
como_la:107 como_llego:-97 como_no:717 como_nuevo:73 como_sale:-59 como_si:-107 complain:80 complain_$:80
complaints:62 compro:-62 con__gusto:132 con__no:71 con_gusto:-87 con_la:-88 con_lo:-58 con_mi:119 con_todo:58
confirmo_$:-69 conmigo_$:106 contento:99 correct:69 correcto:82 cost:-57 could__be:58 could__do:-58 couldnt:97
couldnt_be:-94 count:116 count__out:-93 course:103 cousin:-56 creek:59 cual_$:79 cual__el:-85 cualquier__de:90
cualquier_dia:62 cualquier_hora:-57 cuando__a:78 cuando__de:58 cuando__del:63 cuando_me:-60 cuanto_$:-388
cuanto_anda:80 cuanto_cuesta:80 cuanto_se:117 cuanto_va:-57 cuanto_vale:-62 cuente:59 cuesta:81 cuesta_$:61 cuide:66
dale:199 date:89 date_$:139 day:74 day__that:-60 day__the:112 day_please:-68 days:-70 de__dos:-72 de__es:-68
de__frenos:58 de__manana:103 de__mi:65 de__otra:62 de__si:-74 de__vez:58 de_a:-88 de_abril:-73 de_aceite:-63
de_eso:-67 de_hoy:110 de_la:-60 de_lo:84 de_manana:-76 de_maravilla:91 de_mi:151 de_otra:95 de_que:-95 de_una:274
de_verdad:-72 decir:69 definitely:58 dejalo:-98 dejelo:58 dejo:-113 dejo_en:-75 del__ya:60 del_super:61 desde:-142
desde_ayer:-62 desde_que:-91 deseo:89 dia:-56 dia_de:71 dia_o:60 dias:-79 dias_$:-58 dice__si:64 did__last:-137
did_you:-74 didnt:-95 diga:175 digan:56 digo:-100 dijo:86 dime_cuanto:82 dinero:-77 dinner:-64 dios__lo:68 dios_me:82
dios_quiere:-64 dirty:-75 do:149 do_$:164 do__but:-84 do__do:-125 do__have:-65 do__in:-60 do__thursday:57
do__work:-67 do__you:66 do_any:-68 do_friday:-71 do_i:-116 do_it:186 do_that:58 do_thursday:65 do_you:-160
does__get:-77 does__matter:-77 does__need:75 does_it:-83 doing__it:68 doing_the:-119 doing_to:68 dollars:-64
donde_mero:65 done:100 done_last:-74 dont:123 dont__a:-104 dont__my:177 dont__the:-68 dont_need:-89 dont_see:80
dont_think:-67 dont_want:-120 dos_$:-66 dos_de:67 double:-141 down:166 down_on:-68 down_the:-98 dream:80 drive_to:-62
drives:98 drives_like:122 driving_it:64 dry:92 dude:143 due_$:56 dura:-87 dura_$:-72 each:-99 either:130 el__a:136
el__antes:112 el__bien:64 el__carro:64 el__cuanto:65 el__del:96 el__despues:117 el__esta:-63 el__le:178
el__manana:-56 el__ni:-104 el__o:-86 el__para:81 el__paso:-72 el__pero:-99 el__por:-59 el__que:87 el__quedo:68
el__tempranito:113 el__temprano:133 el__tienen:-69 el__voy:-148 el__y:63 el_azul:163 el_carro:70 el_dinero:-80
el_otro:60 el_ruido:71 el_sabado:-56 el_sedan:130 el_trabajo:95 else:-120 en_$:-78 en__casa:-56 en__hora:-63
en__lista:164 en__me:85 en__que:58 en__rato:84 en__sala:60 en__sale:-70 en_cuanto:56 en_el:92 en_mil:-93 en_pie:216
en_una:-63 end__the:67 end_of:67 enterado:-64 enterado_gracias:-63 entonces_$:97 entran:-72 entrance:106 entro:60
entro_$:89 es__estan:56 es__mismo:82 es__o:-56 es_la:82 es_un:106 esa:-66 escribir_$:69 ese_servicio:62 eso_que:83
espero_$:-65 esta:-104 esta__caro:-118 esta_bien:196 esta_hecho:-78 estaba:77 estare:166 estare_$:-83 estaria:-99
estaria_listo:-70 estas:134 este:-121 estoy_$:62 estoy__el:60 estoy_ahi:-82 estoy_bien:-102 estoy_en:-83 eta:-58
even:56 even__the:59 every:-95 everything_$:-72 everything_was:62 ex:-137 ex__the:-119 except:-84 fallar:69
favor_$:-142 feel_like:-88 feo:-104 fierro:71 fierro_$:108 find:-168 fine_you:64 firme:72 first_thing:-71 fix_it:-72
fluid:-64 fluid_$:-63 fly:-420 for__at:-71 for__it:-62 for__reminder:63 for_friday:-151 for_it:152 for_me:-77
for_nothing:-63 for_now:-72 for_that:-65 for_thursday:168 for_tomorrow:183 forgot:-81 forty:94 foto:-57 four_$:66
free__my:136 free_or:-73 frenos_$:78 fri:-87 friday_$:-148 friday_afternoon:112 friday_and:-56 friday_morning:-67
fridge:61 front:81 front_$:63 fuera:-113 fui:-95 full:-129 garage__the:70 gas:-84 get:126 get__done:167 get_it:62
get_that:111 get_there:-66 gets:135 give:-78 give_it:-57 go:151 go__it:111 go_ahead:222 go_away:-88 go_for:88
go_on:90 god_bless:-77 gone_$:-58 good_$:-129 good__it:-116 good__the:138 good__tomorrow:149 good_what:71 got_$:-63
got__cancel:-63 got_any:-79 got_home:83 got_it:192 got_my:116 got_the:-117 got_to:62 grab:101 gracias__a:69
gracias__todo:-98 gracias_el:67 gracias_pero:-69 gracias_por:-134 gracias_y:56 grand:73 grand_$:73 grandma:-173
great__you:-163 grinding_$:70 guess:124 guess_i:138 gustaria:128 gusto_$:-64 guy:-82 guys_are:-65 guys_have:-62 ha:94
hablan:-74 hablan_$:-74 hace__ruido:101 hace_ningun:57 hacer:-88 hacerlo:57 haciendo:-58 had:-127 had_it:-58
had_to:-155 hagale:62 hago_$:-62 hands:-60 hang:-77 hang_on:-58 happier:81 happy:118 happy_$:-119 has:83 hasnt:93
hasta__vi:-93 hasta_el:-58 hasta_la:70 hasta_que:-140 have:-64 have__call:85 have__done:-68 have_a:-95 have_got:67
have_it:-72 have_that:83 have_the:-154 hay__el:-133 hay__hacerlo:100 hay__si:-78 hay_que:78 he:68 hecho:64
hecho_$:135 heck:81 hell:154 hello:-68 here:-78 hey:-57 hey__is:-66 hey_it:-66 high:72 hill_$:73 hm:-137 holiday:75
home:-110 home_$:-64 hope:-59 hora__hoy:-60 hora__lo:101 hora_me:95 hour_$:95 how__are:69 how__how:92 how__i:66
how__is:-215 how_is:65 how_much:75 hoy:-69 hoy_en:61 hoy_mismo:-66 huevo:86 huh_$:62 humito:-72 humo_$:-111 hun:-73
hurt:82 i_$:114 i__a:-74 i__an:104 i__be:-67 i__both:-99 i__bring:-60 i__by:69 i__coming:-66 i__do:-111 i__got:89
i__home:79 i__my:-88 i__off:69 i__out:57 i__say:-151 i__so:121 i__told:-57 i__yes:-79 i__you:-122 i_cant:-68
i_come:-82 i_did:119 i_do:188 i_dont:-91 i_get:-56 i_go:-61 i_got:-77 i_guess:58 i_just:-66 i_make:273 i_miss:-82
i_moved:65 i_only:-58 i_remember:70 i_say:-116 i_sold:-121 i_stop:73 i_took:72 i_wont:88 i_would:135 ice:-73 id:151
id__a:58 id__it:-67 id_be:164 id_like:-61 id_rather:-68 id_say:-82 idea:116 idea_$:145 if__like:-256 if_the:-78
if_you:108 ill:192 ill__by:-77 ill__for:82 ill__it:-78 ill__over:188 ill__the:118 ill__there:318 ill_be:132
ill_come:85 ill_leave:65 ill_need:62 ill_pass:-62 ill_stop:65 ill_wait:-72 im__for:76 im__the:-117 im__to:-80
im__what:172 im_all:-124 im_coming:121 im_down:290 im_fine:-299 im_good:-178 im_in:295 im_not:-92 im_ready:177
imagen:-82 in_$:104 in__a:-117 in__garage:-69 in__now:90 in__out:93 in__you:154 in_and:72 in_friday:-61 in_it:-81
in_law:59 in_the:-60 in_traffic:64 in_your:-92 instead:-63 insurance:-59 interesa:127 interest:-115 interested:170
interested_$:183 into:57 ir_$:-114 is:-57 is__bill:68 is__come:57 is__for:151 is__how:-138 is__just:65 is__on:-70
is__street:72 is__the:72 is__under:-79 is__with:-81 is_a:91 is_alright:-162 is_at:71 is_been:-60 is_fixed:79
is_for:-73 is_full:-129 is_good:114 is_got:56 is_history:97 is_how:64 is_it:-88 is_no:-62 is_off:-78 is_ok:-76
is_open:67 is_perfect:112 is_right:278 is_still:-67 is_this:-69 is_too:-56 is_up:-92 is_your:82 ish:121 ish_$:124
issues:89 it__and:-56 it__day:57 it__friday:58 it__got:56 it__how:97 it__if:-57 it__is:-63 it__like:-65 it__long:-62
it__me:104 it__needed:124 it__next:-95 it__of:123 it__on:119 it__or:67 it__something:-56 it__still:-67 it__the:-67
it__there:57 it__time:119 it__under:109 it__up:-88 it__with:73 it__you:75 it_a:102 it_and:66 it_at:-61 it_but:72
it_come:59 it_done:59 it_is:105 it_like:63 it_matter:-77 it_need:58 it_now:-66 it_on:189 it_over:61 it_overnight:78
it_run:69 it_says:144 it_shakes:-130 it_take:58 it_this:-91 it_thursday:56 it_to:-163 it_tomorrow:-117
it_tuesday:-110 it_under:-67 it_went:-73 it_will:-57 jaja:114 jaja_si:98 jajaja:-59 jala:142 jala__la:-82 jale:119
jale_$:187 jueves_$:57 jueves__la:155 jueves_en:98 just__i:-107 just_the:66 k:-100 k_$:-99 keep_me:130 keeps:-79
kind:78 know_$:-62 know_it:90 know_the:-80 la__ahi:110 la__al:69 la__asi:-82 la__esta:-75 la__la:76 la__me:-64
la__mi:59 la__no:-96 la__o:142 la__pero:93 la__por:89 la__que:67 la__se:-62 la__vez:85 la_aguja:58 la_blanca:82
la_camioneta:61 la_hago:-64 la_lista:102 la_otra:119 la_senora:63 laid:105 laptop:59 laptop_$:67 las__a:61
las__cuanto:64 las__la:69 las__llego:-92 las__punto:-58 las__si:72 las_me:-62 las_no:-56 las_se:76 las_si:-61
last:-56 last_time:117 last_week:-169 late_$:99 le__a:56 le__el:-72 le__humo:-114 le__su:70 le__una:-62 le_caigo:119
le_digo:-67 le_gusto:71 le_sale:-114 leaks_no:63 left:-92 less:135 let__know:88 lets:-68 lets__in:-57 lets_do:72
lets_get:127 lets_say:-97 lied:-115 lied_to:-114 like:-81 like__get:95 like_a:80 like_new:181 like_you:88 liked:116
limp:-76 linea:-60 lista:82 listo:-60 listo_$:-118 little_late:-59 live__the:105 live_in:74 llego:66 llego__la:-85
llego_a:-83 llego_como:-64 llego_en:-174 lleno:-62 llevar:-64 llevarlo_$:87 llevo:-71 llueve:-79 lo:76 lo__a:-84
lo__ahi:-62 lo__en:-67 lo__manana:-80 lo__mi:-59 lo__para:-62 lo__que:88 lo__si:-113 lo_cambio:-59 lo_de:-58
lo_dejo:-82 lo_llevo:90 lo_que:68 lo_quiero:102 lo_recogi:-61 lo_tengo:-82 lo_voy:-77 local:72 lol:119 long_$:86
long_for:-58 long_will:-65 long_would:62 look:71 look_$:73 looked_at:77 los:-60 los__estan:-72 los__si:67
los_cambios:-67 los_frenos:85 los_que:83 lot_$:96 love:93 loved:-108 luego:-96 luego_$:-66 luego_me:-61 lugar:-73
lugar_de:-59 lunes__a:-75 lunes__las:62 lunes_a:64 lunes_temprano:61 lunes_y:64 made:-124 make_it:-125 mal:-99
mal_$:-217 mal_el:58 manana__de:59 manana__la:94 manana__las:79 manana_a:116 mande:-70 manden_textos:69
many_texts:-60 maravilla:90 martes:-67 martes__de:61 martes__la:85 martes__le:-111 martes_pero:-88 martes_si:-68
mas:-126 mas_de:-94 mas_tarde:-61 matter:-77 matter_$:-77 maybe:-110 me__a:-62 me__como:-123 me__con:-73
me__cuanto:155 me__de:-82 me__falta:86 me__oil:155 me__para:-67 me__price:-79 me__textos:69 me__then:-56 me__un:-70
me__want:58 me__when:99 me__y:-84 me_agarro:-59 me_at:66 me_back:85 me_before:-57 me_but:71 me_dejaron:64 me_digan:57
me_es:-135 me_first:60 me_for:57 me_gustaria:138 me_gusto:-142 me_in:162 me_interesa:170 me_late:413 me_now:-69
me_olvida:107 me_out:-115 me_parece:139 me_puedo:124 me_queda:-83 me_sale:-74 me_to:78 me_twice:66 me_up:125
me_voy:-73 meh:-140 mejor__jueves:-56 mejor__lo:80 mejor_el:-65 menos_que:-66 mensaje:72 metal:-62 mi__asi:109
mi__me:-76 mi__pero:58 mi__que:81 mi_carro:-105 mi_jefe:64 mi_nino:77 mi_vida:-69 mid:67 miercoles__las:-58
miercoles_a:-58 miercoles_de:59 miercoles_en:-88 miercoles_o:96 miercoles_que:144 might:87 might__well:156
might_as:156 might_be:-63 mijo:59 mijo_$:69 mil_$:-101 mil_gracias:118 millas:-68 millas_$:-104 min:-176 min_$:-90
mine:-60 mire:70 miss:97 miss_it:208 modo:88 mon:-69 monday_$:-83 monday__be:-111 monday_at:-62 monday_instead:-56
monday_is:-57 monday_or:98 monday_please:-62 money_wise:68 most:61 mother__law:78 mother_in:78 moved:75 much__it:-106
much_for:63 much_is:-117 muchas__por:-97 mucho_$:-56 muere:-71 muy__el:75 muy_bien:89 muy_caro:-65 muy_contento:80
muy_feo:-84 my__be:63 my__before:75 my__can:86 my__dont:-74 my__in:78 my__one:-114 my__out:112 my__what:72
my__will:87 my_appointment:-76 my_arm:57 my_cousin:-56 my_day:75 my_end:56 my_list:65 my_mind:-106 my_seat:-61
my_son:67 my_wheel:68 nada_mas:61 nadie:-60 nah:-76 need_$:-89 need__car:71 need__change:-81 need_a:61 needs:61
needs_doing:65 neither:-171 neither_$:-139 nel:-78 nel_$:-77 new:101 news:118 next:73 next__any:74 next_time:58
next_tuesday:-62 ni:-65 ni_el:-98 ni_la:-82 ni_me:-61 ni_modo:88 ni_nada:111 ni_se:-64 ni_uno:-71 nice__you:-78
nice_of:-78 night:-102 night_$:-169 night_and:133 nine:80 nine_$:88 ninguna:65 ninguno:-143 nino:87 nitido:59 no:-85
no_$:-183 no__a:-119 no__ahi:-56 no__at:118 no__bien:-304 no__cancele:86 no__conmigo:-342 no__de:68 no__el:-78
no__falta:-64 no__good:-72 no__gusto:-142 no__here:253 no__interesa:-231 no__los:-67 no__manana:-57 no__mi:-70
no__ninguna:59 no__no:78 no__nomas:-57 no__preocupe:82 no__puedo:124 no__tengo:-76 no__that:94 no__to:64 no__you:-85
no_complaints:62 no_frena:-59 no_gracias:-125 no_hay:152 no_issues:89 no_it:-103 no_jala:89 no_leaks:63 no_llego:-73
no_me:-170 no_more:60 no_my:-57 no_ocupo:-57 no_por:-74 no_problem:204 no_puedo:-163 no_pues:-58 no_quede:-56
no_quedo:-97 no_quiere:65 no_quiero:-91 no_rechina:96 no_se:212 no_sigue:-149 no_tengo:74 no_to:236 no_trabajo:-88
no_voy:-331 no_way:-78 no_what:-59 nomas_que:60 none:-74 none__them:-74 none_of:-74 noon_$:85 nop:-77 nop_$:-77
nos:122 nos__manana:81 nos_vemos:151 not:-96 not__at:75 not_a:191 not_coming:-65 not_friday:103 not_happy:-145
not_interested:-182 not_sure:-260 not_to:148 now:-75 now__me:131 now_no:56 o__de:-64 o_como:-120 o_jueves:120
ocho_$:70 of:-73 of__two:102 of__week:129 of_course:103 of_it:92 of_me:-104 of_next:63 of_that:67 of_these:-79
of_your:89 off__for:72 off__it:56 off__list:-58 off__now:-74 off__schedule:-147 off_the:-139 off_work:70
oh__another:-56 oh_wonderful:-58 oil:81 oil_$:167 ok_$:-351 ok__drive:-62 ok__el:106 ok__good:-226 ok__i:106
ok__it:56 ok__the:-191 ok__what:-104 ok_el:211 ok_friday:114 ok_is:70 ok_paso:76 ok_thanks:-78 ok_to:-105 olvida:107
on:69 on_$:89 on__and:-60 on__calendar:133 on__end:56 on__for:105 on__list:64 on__or:58 on__the:-58 on__way:-117
on_for:-68 on_me:83 on_that:76 on_what:61 once_$:67 one:-97 one_$:-74 one__and:-71 one__is:-108 one__the:59
one_that:-67 one_with:113 opening:120 opening_$:65 or_th:81 orale:111 other:60 otra:80 otra__que:70 otra_semana:62
otro_carro:66 out__a:90 out_on:-79 out_the:69 outside:59 over_$:86 over_here:-187 overnight_$:56 own:-97 palabra:73
par:63 para__es:118 para__martes:-67 para__me:57 para__si:-150 para_alla:-103 para_el:-114 para_eso:96 para_la:-121
para_nada:-113 para_que:-77 parar:56 parking:73 parking_$:170 part:-71 partido:-69 pasa:-117 pasar_a:72 paso_a:-75
paso_el:-63 paso_por:87 pass:-129 past_$:-83 pense:71 peor:-61 perfect:-79 perfect_$:114 perfecto:111 pero:102
pero__en:102 pero__me:133 pero__no:112 pero__que:70 pero__si:-86 pero_cuanto:-256 pero_el:-112 pero_la:-75
pero_le:-111 pero_me:62 pesimo:-61 pie:187 pienso:84 pierde:-64 pierdo:95 pink:75 place:-69 please:-164 please_$:-78
please__me:-92 please__thank:196 please_and:147 please_do:239 please_dont:150 please_have:-90 please_quit:-83
please_take:-152 pleased:72 pongame:62 pop:74 por__no:482 por_ahora:-56 por_el:-106 por_mi:132 por_que:106 por_si:-85
por_supuesto:94 por_todo:-83 porque_no:98 preocupe:82 price_and:-62 pricey:100 problem_$:94 promised:-103
promised_$:-84 puedo_$:59 puedo__el:77 puedo_manana:-78 puerta_$:111 pues:139 pues_$:-64 pues__que:58 pues_el:-170
pues_no:-218 pues_si:170 pues_ya:93 puesto:-58 pulls:-93 punto:-76 puntual:88 puro:90 purrs:117 put__in:60 put_me:112
que__a:86 que__con:-80 que__gracias:-66 que__no:-85 que__otro:-57 que__puedo:-84 que__que:184 que__sale:-68
que__se:-86 que__si:-103 que__un:-64 que_estan:56 que_hacer:67 que_hacerlo:100 que_hora:-67 que_le:-104 que_me:89
que_ni:127 que_no:287 que_pasa:-97 que_sea:91 que_tal:-72 que_trae:111 que_va:-119 que_yo:63 queda:-222 queda_$:-123
quedo_$:-156 queja:60 queja_$:60 quick:61 quien_me:71 quiero:66 quiero__la:77 quiero__que:61 quiet:91 quit_$:-79
rain:102 rather:-88 rato:56 rato__a:-93 re:141 read:-66 read_it:-61 ready:113 ready_$:57 recogi:-61 remind__what:63
reminder:63 revisit:-74 right:-134 right_$:-394 right_now:74 ring:-104 ring_me:-102 roll:138 rough:70 rueda:-57
ruido_$:-107 ruido__de:63 run:108 run_me:66 running:-83 sabado__no:-56 sabado_a:117 sabado_que:-59 saber:-89
said_$:142 sale:-97 sale_$:-60 sale__blanco:-76 sale__que:101 sale_humo:-125 salga_del:56 salgo:-93 saliendo:72
salio:-88 salir:79 same__as:66 santo:-65 saturday_$:-81 saturday_at:60 saturday_hours:105 saturday_morning:-83
say:103 say_it:62 say_no:275 says_$:-92 schedule:109 se:-103 se__como:78 se__en:99 se__hicieron:59 se__llevo:-64
se__mas:227 se__olvida:107 se__que:95 se__va:-71 se_cambiaron:76 se_hace:63 se_le:-65 se_preocupe:82 se_si:-66
se_siente:136 se_va:-97 sea_el:88 sedan:75 sedan_azul:-84 see:195 see__at:-199 see__then:119 see__thursday:78
see_me:-119 see_my:104 see_you:320 seeing:62 seguro:-63 seguro_$:-72 semana__viene:69 senora:59 ser_$:-75 service:64
set:72 set__up:111 set_for:63 set_it:105 shakes:-86 shakes_at:-150 shall:94 shall_be:-79 shes_at:81 ship:-56 shop:-86
shops:101 si_$:67 si__a:94 si__bien:-65 si__cuanto:-241 si__dejo:-131 si__espero:-64 si__favor:133 si__interesa:95
si__jueves:83 si__me:-60 si__pero:72 si__que:153 si__quiere:-64 si__quiero:107 si__si:-61 si_claro:-72 si_cuanto:65
si_dios:-62 si_el:179 si_en:66 si_es:-107 si_fuera:-113 si_gracias:124 si_hay:-96 si_le:-92 si_lo:-81 si_los:61
si_manana:146 si_me:-143 si_no:-158 si_paso:56 si_por:167 si_puedo:56 si_quiero:291 si_se:-95 si_voy:199 si_y:141
si_yo:-68 siempre_$:91 siempre_no:-58 siente:136 siete:60 sign:107 sign__up:180 sign_me:133 sigue__pie:158
sigue_en:158 siguiente:-60 simon:174 simon_el:63 sin:87 sin_aire:-57 sin_falta:108 sipi:125 sitting_at:76 skip:-62
slide:-75 slide__to:-75 slow:-58 smoke:-66 so_$:118 so__to:-72 so_far:66 so_i:142 so_id:86 so_no:-94 so_what:-75
so_yes:83 sold_$:198 sold__the:-94 sold_both:-76 sold_it:-135 something_is:58 soon:65 sounds:-59 squeak:78
steering__is:-74 steering_wheel:-74 still__just:63 still__the:-137 still_coming:117 still_on:163 stop:-92 stop_$:-328
stop__it:91 stop_by:159 stop_in:66 su_carro:-66 su_mensaje:85 suena:60 suena_bien:76 suena_como:-78 suits_me:-73
sunday_so:92 supposed:-62 supposed_to:-62 supuesto:94 sure:68 sure_$:-121 sure__me:100 sure_thing:82 swing_by:82
swing_it:-69 ta:157 take:-77 take_$:95 take__off:-73 take_me:-104 tal:151 talked:57 taller:-64 tambien:88
tambien_le:59 tan__estan:68 tanto_que:73 tarde_$:94 tardes:87 te:-193 tell__the:-79 tell_you:-76 temprano_$:76
ten:-63 tengo:-86 tengo_$:-76 tengo__carro:81 tengo_ninguna:73 terapia:60 text:-87 text__again:-120 text_me:-173
text_you:101 than_the:70 thank_you:114 thanks__nothing:-60 thanks__the:93 that_$:80 that__alright:-162 that__and:-57
that__be:189 that__care:81 that__for:-61 that__has:-66 that__me:65 that_car:-74 that_in:-67 that_last:-126
that_taken:81 that_the:73 that_truck:-70 that_was:-89 that_would:147 the__anymore:-64 the__car:116 the__day:-69
the__does:65 the__dont:71 the__friday:74 the__go:167 the__going:128 the__have:67 the__i:105 the__it:66 the__need:-90
the__no:-82 the__now:-104 the__please:-83 the__still:-60 the__thank:59 the__that:-88 the__the:84 the__then:-71
the__thing:91 the__thursday:-100 the__to:-91 the__took:-80 the__went:-64 the__what:87 the__wheel:-74
the_appointment:-81 the_bank:57 the_brakes:85 the_car:-109 the_counter:74 the_front:140 the_game:-147 the_kids:87
the_next:-100 the_one:95 the_price:-135 the_rear:72 the_reminder:63 the_sedan:-67 the_steering:-91 the_street:67
the_th:-62 the_total:71 the_truck:-71 the_way:108 the_week:64 the_whole:-68 the_wipers:-66 the_work:57 the_wrong:-56
them_$:-114 then_ill:-110 there:108 there__i:99 there__is:62 there__the:159 there_at:-81 there_before:72
there_in:-159 there_with:69 these_days:-56 these_texts:65 they_$:88 thing_$:-76 things:66 think__is:129 think_it:97
third:-98 this_afternoon:-66 this_friday:93 this_time:70 this_week:93 though_$:-66 through:-66 thumbs:83 thumbsup:65
thumbsup_$:81 thurs_works:-87 thursday:-119 thursday_at:62 thursday_is:-66 thursday_morning:-142 tiene_que:63
tienen__el:-64 tienen_donde:63 tienen_lugar:-64 til:-88 time_$:-120 time__i:-76 time__you:84 time_i:92 tires__the:70
tmrw:-66 to_$:119 to__at:-80 to__i:65 to__it:57 to__late:-68 to__me:139 to__no:-67 to__on:-96 to__that:80 to__the:69
to__there:127 to__to:-105 to__you:87 to__your:-57 to_ask:163 to_be:-74 to_change:-81 to_do:-93 to_get:94 to_keep:57
to_know:-88 to_look:60 to_monday:65 to_pay:103 to_set:57 to_sit:64 to_stop:138 to_tell:108 to_text:67 to_that:79
to_the:91 to_you:-116 todavia_estan:74 today_$:-113 todo:104 todo_$:-150 todo__bien:75 todo__gracias:72
todo__orden:94 todo_bien:89 todo_en:79 told_my:71 tomo:77 tomo_la:82 tomorrow_at:153 too__to:-78 too_many:83 took:-73
took_off:72 took_the:-124 top_$:72 top_off:-64 total:69 trabajan:-81 trabajo:92 trabajo_$:88 trae_$:-57
trae__millas:72 trae_mil:59 trae_millas:86 traffic_$:-81 tree:-69 tres:-63 trip:68 troca:60 troca_blanca:-96
troca_se:62 trouble:76 truck_$:-74 truck__the:-75 truck_is:-96 tues:-147 tuesday_$:-124 tuesday__thursday:76
tuesday_or:61 twist:63 twist_my:69 uds:73 un:-91 un__rojo:56 un__se:-69 un__tarde:70 un__y:-57 un_poquito:58
una_llamada:58 una_vez:58 under_it:-57 under_the:-69 unlock:59 uno:-87 uno_$:-128 until_i:-67 up_so:87 up_with:62
use:81 usted:-183 ustedes_$:-106 va:-69 va__ser:-65 va__va:63 va_a:-301 va_el:176 va_en:-206 va_que:68 vale_$:-95
vegas:-62 vegas_$:-62 vemos:88 vemos_manana:81 vendi:-73 vendi_$:60 vendi_la:-74 ver_si:-92 very:83 vez:-62 vida:-75
vida_$:-67 viejo:78 viernes_$:-71 viernes__las:69 viernes_a:64 viernes_no:-67 viernes_santo:-65 viernes_temprano:75
visita:91 voy_$:246 voy__estar:118 voy__hacer:-100 voy__ir:71 voy_manejando:70 voy_pero:63 voy_por:-63 voy_tarde:-90
wait:81 wait_$:159 wait__it:-71 wait_for:-71 waiting_on:-61 want:56 want__come:-78 want__know:-63 want_to:78 was:-126
was_$:-59 was_fine:108 was_fixed:-88 was_in:57 was_told:-57 wasnt:-81 water:65 water_$:103 way_$:155 way__the:-90
way_now:-61 we__be:153 we__do:-126 we_are:61 wed_$:56 wed_at:91 week:-81 well_$:-103 went:-60 went_to:-123
were__how:102 were__in:-63 were_fine:-92 were_good:-68 were_on:203 what_$:-129 what__are:61 what__do:-66 what__i:68
what__the:76 what__your:104 what_a:127 what_are:59 what_did:-65 what_else:-57 what_i:-70 what_is:97 what_it:153
what_who:-63 wheel__off:-74 wheel_is:-84 when:-171 when__get:-59 when__got:77 when_i:85 when_you:103 where_is:63
which:-76 while:-65 while__do:-56 while_you:-72 white:74 white_truck:58 why:149 why_$:-68 why__is:-72 why_do:-86
why_is:-89 why_not:499 wife__it:-78 wifes:67 will__be:-106 will__have:-67 will__there:183 will_be:104 will_do:241
will_i:-86 will_it:-90 will_you:-92 willing:67 win:64 wise_$:60 with__in:-57 with__keys:81 with_a:-66 with_it:105
wobbles:82 wont__coming:-69 wont__it:119 wont__there:-169 wont_be:-64 wont_make:-72 word_$:60 work__it:75 work_for:65
work_on:-64 works:-77 works__me:98 works_but:-166 works_for:96 worse:-147 worse_$:-186 would__a:-57 would_be:75
y_$:263 y__a:77 y__la:-66 y__para:96 y__por:67 y_cuanto:83 y_eso:-90 y_hasta:59 y_la:-84 y_le:-64 y_si:-157 y_yo:66
ya:120 ya_$:164 ya__frena:-56 ya__hecho:-78 ya__las:76 ya__listo:-98 ya__llego:-135 ya__los:-94 ya__para:-158
ya__puse:-58 ya__rechina:96 ya__voy:-135 ya_casi:-111 ya_esta:-104 ya_estan:-110 ya_le:-60 ya_lo:-80 ya_mero:-103
ya_que:106 ya_quedo:-135 ya_tengo:63 ya_vendi:-123 ya_voy:-204 ye:170 yeah_$:180 yeah__is:114 yeah_no:-173 yeah_ok:83
yep:234 yes:583 yes__friday:61 yes__how:-95 yes__is:107 yes__it:-289 yes__works:-93 yes_and:101 yes_but:-78
yes_how:77 yes_i:83 yes_im:-57 yes_please:226 yes_that:-57 yes_what:88 yessir:152 yet:67 yo:-112 yo__aviso:67
yo_paso:104 you__are:-66 you__fix:-72 you__have:76 you__it:153 you__late:-73 you__me:107 you__text:-83 you_all:-104
you_are:80 you_at:-68 you_bet:129 you_did:106 you_do:-69 you_doing:79 you_even:107 you_got:172 you_had:104
you_know:60 you_like:-256 you_open:-61 you_see:-92 you_then:116 you_think:108 you_to:-81 you_want:-67 you_win:64
you_work:-63 youll:68 your__hours:70 your_lot:74 your_saturday:66 youve:56 youve__me:106
"""
