"""What speaks for and against `choose`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "choose"
BIAS = -283
WEIGHTS = """\
#abad:-30 #abor:30 #abou:-31 #abov:-32 #abri:-31 #acep:28 #acer:40 #ache:-53 #acin:36 #acks:27 #actl:30 #adie:31
#ados:34 #agar:58 #ains:-41 #ajar:29 #akin:46 #aldr:-37 #algu:55 #alki:35 #alli:30 #allo:49 #allp:36 #alqu:40
#alre:-34 #also:57 #alve:-25 #amen:39 #amin:26 #amos:-75 #ance:-62 #anda:76 #anot:32 #anso:30 #ante:32 #anyt:-46
#apar:40 #apid:27 #appr:39 #apun:46 #arar:-71 #arat:-42 #arel:-38 #aria:-34 #arli:75 #arme:57 #arou:-45 #arro:33
#arse:33 #arta:45 #asam:25 #asta:-55 #atal:49 #atch:49 #aten:31 #ates:25 #atev:65 #atte:79 #atur:-38 #aunq:29
#ause:64 #avor:64 #aybe:-57 #bado:-30 #ball:37 #bara:-42 #bare:-38 #bast:-65 #bata:49 #batt:-28 #beca:64 #bein:39
#bend:51 #best:35 #bien:-28 #blem:114 #body:34 #book:25 #born:-25 #both:90 #bout:-31 #bove:-32 #bowl:31 #brea:36
#bril:-29 #brin:73 #bsup:70 #cado:27 #caen:-32 #cale:-35 #calv:-25 #cand:26 #cans:30 #cant:-198 #cars:-35 #casa:48
#casi:26 #cati:-25 #caus:64 #cesi:39 #chan:-58 #ched:-56 #cheq:74 #ches:60 #chev:52 #chil:57 #chin:77 #chis:-35
#choi:56 #ciat:39 #cier:57 #cing:36 #cion:51 #cita:-36 #clas:-36 #clic:-26 #cloc:41 #clos:69 #coin:169 #coja:54
#cojo:38 #cold:29 #coll:51 #come:-37 #comp:31 #cond:96 #conv:37 #corn:-26 #cort:46 #cost:38 #coun:29 #cour:33
#crat:30 #craz:28 #crib:-31 #ctly:30 #ctor:29 #cuan:53 #cuat:33 #cues:-64 #cupo:45 #dale:58 #damo:-35 #deci:79
#defi:28 #deja:-47 #dejo:40 #depe:-26 #depo:40 #dere:29 #desc:66 #desp:-28 #dial:-60 #dian:39 #dias:-39 #didn:34
#digo:-27 #dijo:43 #dime:66 #dine:-33 #dios:30 #disc:40 #dito:76 #dnes:69 #doct:29 #does:-27 #doin:28 #door:37
#dran:-55 #dria:-105 #driv:49 #drop:55 #each:-87 #eady:-34 #eaki:27 #earl:68 #easy:38 #ebod:34 #ecar:42 #ecau:64
#eces:40 #echi:31 #echo:54 #ecia:39 #ecid:43 #ecio:-29 #ecit:45 #ecoj:38 #econ:96 #edam:-35 #edes:25 #edia:92
#edir:52 #edne:25 #eeti:54 #efer:92 #efie:31 #efin:28 #efon:25 #egar:32 #egun:69 #egur:-34 #eing:39 #eith:-33
#ejor:-57 #elef:25 #elos:35 #emel:56 #emos:55 #empe:27 #empo:37 #enca:-53 #ence:99 #enci:30 #endi:109 #endo:56
#endr:-65 #ends:-30 #ener:32 #enes:-25 #engo:26 #enin:-49 #enme:46 #enos:35 #enta:74 #ente:55 #ento:52 #entr:28
#eone:42 #epen:-26 #epla:37 #epos:40 #eque:74 #eran:37 #erce:27 #erdo:60 #erec:29 #eren:86 #erfe:59 #eria:-42
#erne:40 #erni:37 #erno:26 #erra:-26 #erre:57 #erve:56 #erwi:39 #esas:-58 #esca:30 #esco:36 #escu:28 #esda:29
#eser:56 #esit:39 #esnt:-79 #esos:-39 #espe:47 #espo:45 #espu:-25 #esta:47 #estu:52 #esup:25 #etal:95 #eter:40
#ethi:-26 #etin:54 #evar:66 #ever:122 #eves:28 #evok:-76 #eway:40 #expl:32 #exti:-28 #favo:64 #fech:-55 #fect:59
#fere:81 #fier:39 #find:-77 #fine:65 #fing:26 #fini:28 #firm:36 #fona:30 #forg:-51 #form:39 #free:44 #fren:35
#full:34 #gamo:-40 #gles:-33 #goin:62 #golp:30 #grab:87 #grac:74 #grav:34 #groa:29 #gues:40 #guna:-57 #gund:81
#guro:-34 #hace:63 #hanc:-60 #happ:25 #hate:65 #heca:42 #hech:54 #heco:-29 #heel:-26 #hequ:74 #hers:38 #herw:39
#heve:52 #hich:49 #hina:31 #hird:44 #hist:-35 #hoic:56 #hola:-138 #hold:-36 #home:27 #hone:27 #hool:-31 #hose:-57
#houl:51 #hour:-101 #hubb:32 #huma:-25 #humb:66 #hurs:31 #iant:39 #iate:39 #ible:-57 #icad:27 #iche:52 #ided:-41
#idit:30 #idnt:34 #ield:-27 #iemp:54 #iene:-42 #iera:64 #iero:61 #ierr:25 #iest:79 #igan:28 #ight:95 #igue:26
#illo:65 #imag:-53 #imer:35 #impo:-93 #inar:26 #inca:26 #ince:26 #inde:-72 #iner:-34 #inge:26 #ingl:-34 #ings:-55
#ingu:-119 #init:28 #inst:-89 #ique:29 #irme:29 #isco:42 #isim:-30 #isit:-37 #iste:73 #itel:28 #iten:36 #ithe:-33
#itid:39 #itte:37 #ivew:27 #jala:26 #jefe:31 #jove:27 #juev:28 #keys:26 #kids:-39 #labo:30 #laci:36 #lady:28
#lase:-34 #last:81 #ldnt:68 #ldri:-37 #leav:34 #lect:51 #leep:36 #lefo:25 #lega:30 #lema:43 #lend:29 #leva:66
#leve:26 #lgun:46 #lick:-26 #lier:41 #lies:34 #lift:34 #like:-69 #liqu:30 #list:30 #lkin:35 #llec:51 #llev:98
#llpa:36 #loca:-25 #lock:68 #loco:-42 #lonc:58 #long:38 #lose:69 #love:32 #lpar:36 #lpet:30 #lqui:40 #lrea:-34
#ltim:92 #luga:-29 #lves:-25 #mage:-53 #main:-28 #make:33 #mana:36 #mand:84 #many:29 #matt:107 #mayb:-57 #mber:83
#mbsu:70 #mebo:34 #medi:57 #meet:54 #mejo:-52 #mela:56 #menm:31 #meno:56 #ment:26 #meon:42 #mero:68 #meta:81
#meth:-26 #mina:26 #mine:28 #ming:-33 #modo:49 #moms:-30 #morn:46 #mpez:30 #mpos:-93 #much:48 #muev:44 #nada:-51
#nadi:31 #nana:-25 #nani:45 #nazo:30 #ncan:-27 #ncar:32 #nces:47 #nche:26 #ndid:46 #ndin:37 #ndit:46 #ndra:-58
#near:34 #nece:39 #need:82 #neit:-164 #nera:28 #nero:-33 #nesd:25 #ness:43 #nest:76 #neve:27 #next:-82 #nger:26
#ngle:-34 #ngun:-119 #nigh:44 #nill:65 #nine:33 #ning:-159 #nino:48 #nita:45 #nite:28 #niti:39 #nito:-38 #noma:34
#none:-132 #noon:-34 #note:31 #nque:29 #nste:-48 #ntad:43 #ntar:25 #ntem:29 #ntie:-46 #ntit:34 #nton:47 #nuev:27
#numb:82 #nume:40 #nvie:37 #nyth:-46 #oble:116 #ocat:-25 #ocho:50 #oclo:31 #octo:29 #ocup:70 #odri:-61 #oesn:-79
#oger:-28 #oice:56 #oing:90 #ojal:25 #oken:-27 #olle:51 #olpe:30 #omas:34 #omeb:34 #omeo:42 #omet:-27 #omin:-29
#ompr:26 #onal:28 #onaz:30 #once:26 #onch:26 #ones:29 #ongo:39 #only:-56 #onvi:29 #ooks:27 #oone:59 #oons:-33
#opci:67 #open:26 #opti:58 #oqui:-31 #oral:28 #orge:-49 #orki:-56 #orks:44 #orme:39 #orni:43 #orqu:46 #orri:-31
#orry:-29 #orte:26 #osib:-93 #osit:40 #ossi:-45 #osto:32 #otal:32 #otem:31 #othe:78 #ould:-49 #ount:29 #oure:47
#ours:39 #ovel:31 #oven:27 #owli:27 #paga:36 #park:31 #paro:-27 #part:39 #pcio:67 #pedi:67 #pelo:35 #pend:26 #pens:29
#pera:38 #perd:67 #pere:-27 #perf:59 #pero:-39 #pete:30 #pezo:30 #phon:26 #pick:-78 #pidi:30 #plan:43 #plen:31
#pliq:33 #plis:35 #podr:-61 #poke:-27 #pong:39 #poqu:-31 #porq:46 #posa:31 #posi:-53 #poss:-45 #ppen:25 #ppre:39
#pran:-42 #pref:123 #pren:31 #pres:52 #pric:42 #pris:72 #prob:125 #ptan:28 #ptio:58 #pued:-41 #pues:55 #punt:51
#quea:27 #qued:28 #quic:29 #quin:-27 #quit:-82 #rack:40 #rale:28 #ranc:41 #rani:-66 #rans:42 #rapi:49 #ratc:30
#rate:30 #rave:34 #razy:28 #rcer:27 #rday:-45 #rdec:44 #rdon:66 #reak:36 #rech:60 #reco:57 #reet:-25 #refe:92
#refi:31 #rely:-38 #renc:89 #rend:31 #repl:37 #rese:70 #rest:26 #reve:36 #revo:-76 #rfec:59 #rget:-49 #ribe:-30
#rice:42 #ried:-32 #righ:47 #rime:35 #rinc:26 #ring:72 #rise:72 #rive:41 #rkin:-62 #rlie:75 #rmed:29 #rmer:39
#rnig:37 #rnin:46 #rnoo:26 #roan:29 #robl:125 #rong:-37 #ront:34 #rops:45 #roun:-45 #rows:41 #rpri:72 #rque:63
#rrie:-32 #rsda:28 #rtam:28 #rted:25 #rven:41 #rwis:39 #saba:-30 #safe:25 #sald:-37 #sale:-32 #salg:46 #same:-85
#satu:-35 #says:53 #scal:-32 #scan:30 #scho:-31 #scoj:54 #scou:42 #scra:30 #scri:-31 #scue:28 #sday:57 #seco:96
#seda:-33 #segu:44 #send:-29 #sent:68 #serv:47 #shou:51 #sibl:-138 #sien:35 #sier:-48 #sies:45 #sigu:26 #sinc:38
#sipi:66 #sito:82 #sits:-27 #sitt:31 #slee:36 #slot:60 #some:43 #sona:26 #soon:59 #sorr:-29 #sort:-25 #sper:39
#spok:-27 #spon:28 #spos:39 #spue:-25 #ssib:-45 #stad:43 #star:44 #stea:-48 #sted:101 #stil:38 #stop:26 #suen:26
#suit:29 #supu:25 #tach:-53 #tada:25 #tado:44 #tain:35 #take:35 #tala:40 #talk:25 #tall:46 #tare:37 #tari:-28
#tars:33 #tart:37 #tche:60 #teac:-62 #tead:-48 #tear:30 #tede:25 #tele:47 #tell:-31 #tely:42 #teme:61 #temp:-45
#tend:-48 #teng:36 #tera:63 #terc:27 #tern:26 #tery:-28 #teve:65 #text:-27 #that:60 #them:41 #then:-31 #they:25
#thir:53 #this:-36 #thos:-57 #thum:66 #thur:40 #tido:39 #tiem:34 #tier:-37 #till:47 #tima:63 #timo:40 #ting:32
#tion:80 #tito:34 #toca:-59 #toda:37 #todo:37 #tonc:47 #took:-30 #tota:32 #trae:28 #tree:-25 #tres:32 #tter:100
#turd:-35 #turn:-34 #ualq:40 #uant:52 #uatr:33 #ubby:32 #ueal:28 #uede:-41 #uedo:31 #uena:25 #uess:40 #uest:-39
#ueva:44 #ueve:55 #uick:29 #uien:-30 #uier:54 #uite:36 #uito:-31 #uits:30 #uldn:68 #ulti:92 #uman:-25 #umbe:82
#umbs:66 #umer:40 #unda:38 #unde:25 #undo:33 #unqu:29 #unte:42 #upue:25 #urda:-35 #ursd:28 #urse:33 #uste:58 #usto:55
#utch:30 #vely:31 #vemo:79 #veni:-56 #vern:37 #very:-35 #vete:42 #vewa:27 #vien:-37 #vier:36 #ving:25 #visi:-37
#voke:-76 #wate:32 #wedn:25 #weds:31 #week:-58 #well:99 #were:-38 #whee:-26 #wher:36 #whic:49 #wife:-40 #will:89
#wise:69 #wlin:27 #wont:-64 #worr:-31 #woul:-80 #wron:-37 #xpli:33 #xtin:-28 #your:61 #ythi:-46 #zero:-93
%again_later%agree:36 %again_later%away:-27 %again_later%bring:57 %again_later%busy:62 %again_later%car_part:72
%again_later%do_it:27 %again_later%family:-31 %again_later%lift:47 %again_later%meaning:51 %again_later%on_way:32
%again_later%opening:72 %again_later%pay_day:-28 %again_later%phone:31 %again_later%place:-45 %again_later%season:-49
%again_later%shift_it:-28 %again_later%staff:28 %again_later%start_again:32 %again_later%wrong_one:42 %agree:227
%agree%away:108 %agree%bad:59 %agree%bring:37 %agree%busy:64 %agree%call_off:-37 %agree%car:-37 %agree%car_part:38
%agree%elsewhere:67 %agree%fails:-27 %agree%family:31 %agree%gone_car:71 %agree%how_long:116 %agree%leave_me:31
%agree%message:-34 %agree%money:65 %agree%noise:29 %agree%on_way:67 %agree%opening:42 %agree%pay_day:53
%agree%phone:47 %agree%place:64 %agree%question:110 %agree%season:-46 %agree%shift_it:41 %agree%smoke_smell:36
%agree%staff:59 %agree%start_again:70 %away:76 %away%bad:26 %away%bring:-34 %away%busy:37 %away%on_way:78
%away%place:35 %away%question:28 %away%refuse:-44 %away%start_again:-43 %bad%meaning:-27 %bad%wrong_one:29 %bring:93
%bring%call_off:66 %bring%car_part:-29 %bring%do_it:32 %bring%fails:29 %bring%gone_car:-28 %bring%how_long:-45
%bring%leave_me:27 %bring%money:46 %bring%on_way:41 %bring%opening:32 %bring%question:-40 %bring%refuse:-80
%bring%shift_it:25 %bring%start_again:39 %bring%thanks:63 %busy:58 %busy%call_off:74 %busy%car_part:39
%busy%fails:-63 %busy%family:38 %busy%pay_day:-35 %busy%phone:31 %busy%staff:28 %busy%wrong_one:88 %call_off:-72
%call_off%car:-25 %call_off%do_it:-34 %call_off%gone_car:52 %call_off%how_long:172 %call_off%machine:39
%call_off%meaning:-67 %call_off%message:-27 %call_off%odometer:-37 %call_off%on_way:42 %call_off%phone:-47
%call_off%place:-28 %call_off%question:36 %call_off%refuse:-68 %call_off%shift_it:112 %call_off%staff:77
%call_off%start_again:83 %call_off%thanks:-42 %car:-34 %car%doubt:28 %car%gone_car:-80 %car%meaning:38
%car%odometer:32 %car%refuse:69 %car%shift_it:-34 %car%staff:-64 %car_part:150 %car_part%fails:38
%car_part%how_long:-34 %car_part%leak:30 %car_part%on_way:26 %car_part%place:-49 %car_part%question:-69
%do_it%family:-68 %do_it%leak:27 %do_it%money:33 %do_it%odometer:-36 %do_it%wrong_one:-64 %doubt%elsewhere:40
%doubt%how_long:35 %doubt%leave_me:34 %doubt%money:-45 %doubt%odometer:-25 %doubt%place:-40 %doubt%shift_it:76
%doubt%wrong_one:39 %elsewhere%family:-27 %elsewhere%meaning:30 %elsewhere%phone:35 %elsewhere%place:-52
%elsewhere%staff:25 %fails:84 %fails%how_long:28 %fails%leave_me:-33 %fails%money:66 %fails%noise:33
%fails%question:44 %fails%refuse:-79 %fails%start_again:53 %family:103 %family%on_way:36 %family%opening:-28
%family%phone:48 %family%place:58 %family%refuse:-68 %gone_car:51 %gone_car%how_long:-39 %gone_car%money:37
%gone_car%on_way:-30 %gone_car%question:-28 %gone_car%refuse:65 %gone_car%wrong_one:-30 %how_long%leave_me:-43
%how_long%money:-35 %how_long%on_way:-32 %how_long%opening:-34 %how_long%phone:27 %how_long%place:-36
%how_long%refuse:26 %how_long%shake:26 %how_long%thanks:61 %how_long%wrong_one:45 %leak:75 %leave_me:-134
%leave_me%on_way:25 %leave_me%opening:44 %leave_me%question:25 %leave_me%refuse:33 %leave_me%start_again:59 %lift:136
%lift%odometer:54 %lift%on_way:48 %lift%phone:47 %lift%refuse:82 %lift%wrong_one:-26 %machine%refuse:29 %meaning:145
%meaning%question:75 %meaning%refuse:-67 %meaning%shift_it:38 %meaning%wrong_one:56 %money:39 %money%on_way:47
%money%pay_day:31 %money%phone:-27 %money%question:-48 %money%shake:26 %money%staff:58 %money%wrong_one:-28
%noise:109 %noise%on_way:28 %odometer:116 %odometer%on_way:72 %odometer%question:56 %odometer%refuse:-32
%odometer%shift_it:-41 %on_way:82 %on_way%opening:54 %on_way%place:-25 %on_way%shift_it:34 %on_way%start_again:26
%opening:161 %opening%start_again:26 %pay_day:41 %pay_day%staff:26 %phone:53 %phone%question:-33 %phone%staff:32
%place:41 %place%question:-26 %place%refuse:-42 %place%who:25 %question:35 %question%refuse:77 %question%season:-37
%question%shake:26 %question%shift_it:137 %question%staff:-33 %question%who:-70 %question%wrong_one:54 %refuse:-82
%refuse%shift_it:82 %refuse%start_again:50 %refuse%thanks:53 %season:-82 %shake:30 %shift_it%staff:-39
%shift_it%start_again:-50 %smoke_smell:40 %staff:54 %start_again:135 %thanks:217 %who:-76 @?:-75 @after_visit:-54
@car:-29 @confirm:-133 @day:-60 @later:-29 @nothing:-87 @offers:587 @offers_a_las:69 @time:-76 @times:141
@walk_in:-51 ^_a:-38 ^_after:-65 ^_afternoon:97 ^_ahi:35 ^_all:109 ^_am:137 ^_and:76 ^_antes:-114 ^_anything:51
^_apunteme:29 ^_are:-43 ^_ask:-32 ^_bank:-43 ^_basta:-65 ^_before:-46 ^_better:-58 ^_both:37 ^_call:-73 ^_can:-60
^_cant:-145 ^_confirmed:25 ^_could:-95 ^_couldnt:68 ^_cual:-42 ^_cualquiera:54 ^_cuanto:-62 ^_dale:38 ^_de:-39
^_definitely:28 ^_deja:-27 ^_do:-112 ^_doesnt:34 ^_done:48 ^_either:96 ^_el:196 ^_en:30 ^_esa:43 ^_ese:-35 ^_eso:-25
^_esta:-37 ^_first:129 ^_forget:-49 ^_fri:41 ^_friday:157 ^_go:52 ^_got:-81 ^_gps:-27 ^_hard:-48 ^_have:-64 ^_hm:-167
^_hola:-138 ^_hold:-34 ^_how:-328 ^_i:-74 ^_ill:126 ^_im:-43 ^_is:-199 ^_it:-61 ^_jueves:81 ^_kids:-47 ^_la:219
^_las:26 ^_last:73 ^_later:83 ^_le:-32 ^_let:-32 ^_lunes:46 ^_make:-127 ^_mas:-38 ^_maybe:-35 ^_me:91 ^_mejor:-122
^_mi:42 ^_muy:-76 ^_my:-64 ^_nada:-49 ^_nd:96 ^_neither:-164 ^_nel:-30 ^_ni:-66 ^_nine:34 ^_ninguna:-57 ^_ninguno:-51
^_no:-76 ^_none:-131 ^_noon:-86 ^_nop:-57 ^_not:-159 ^_numero:59 ^_off:25 ^_on:58 ^_only:-93 ^_orale:28 ^_otra:-55
^_parar:-71 ^_perfect:29 ^_perfecto:52 ^_pero:-47 ^_phone:-29 ^_please:-29 ^_podria:-51 ^_por:27 ^_prefiero:31
^_primero:-41 ^_pues:31 ^_put:75 ^_que:-54 ^_quiero:55 ^_quit:-74 ^_re:-53 ^_remind:-28 ^_revoke:-76 ^_saturday:129
^_se:-55 ^_second:57 ^_si:133 ^_sipi:66 ^_so:47 ^_sold:42 ^_sure:50 ^_take:75 ^_temprano:101 ^_the:139 ^_there:-31
^_third:27 ^_those:-50 ^_thumbsup:70 ^_thurs:40 ^_thursdays:-63 ^_tienen:-45 ^_tomorrow:35 ^_tomorrows:41 ^_too:-138
^_tres:33 ^_tues:41 ^_tuesday:53 ^_two:28 ^_un:-31 ^_uno:39 ^_uy:-38 ^_va:39 ^_viernes:110 ^_we:33 ^_wed:40
^_wednesday:50 ^_weds:33 ^_were:-29 ^_what:-204 ^_whatever:45 ^_which:-65 ^_whichever:63 ^_who:-48 ^_works:97
^_wrong:-25 ^_y:-243 ^_yes:43 ^_you:-30 ^_zero:-93 a:43 a__a:-36 a__at:46 a__casa:50 a__day:-62 a__dos:25 a__esta:50
a__home:28 a__hora:-86 a__horas:-25 a__hour:31 a__light:27 a__mechanic:28 a__misma:-52 a__nueve:32 a__ocho:42
a__of:-32 a__por:-40 a__que:27 a__to:36 a__una:-87 a__what:-27 a__y:-70 a_alguien:31 a_bus:26 a_car:39 a_esa:-27
a_la:-73 a_las:-35 a_lift:34 a_meeting:44 a_morning:25 a_no:-34 a_que:-51 a_red:27 a_ride:51 a_saturday:-90
a_tener:32 a_time:-41 a_trabajar:36 a_tuesday:-65 a_two:31 about:-31 about_it:-30 about_the:29 above:-32 abril:-29
aceptan:28 after__th:-66 after_i:45 after_that:-32 after_the:-28 afternoon:59 afternoon_$:-35 afternoon_one:29
afternoons:-33 again_$:32 against:-41 ahi:148 ahi_estare:37 ai:39 al:113 al__dia:-31 al_arrancar:32 al_medio:-31
algo:-65 algo_el:-57 alguien_por:31 all__them:54 all_day:40 alli:36 already:-34 also:57 am:102 am_$:25 am__going:-27
am_is:86 an_hour:-51 an_oil:27 and:53 and__have:-31 and__in:-43 and__it:-26 and__just:25 and__my:33 and__need:57
and_have:47 and_i:26 and_id:27 and_ill:47 and_im:-37 and_the:-26 and_then:-26 and_we:-33 and_what:31 and_you:-35
ando:-28 anoteme:31 antes_$:75 antes_de:-64 any:-135 any__after:-33 any__for:42 any__those:143 any_chance:-59
any_day:-66 any_of:148 any_time:-36 anything:-38 anything__the:-46 anything_but:85 appointment_$:-45 appreciate:39
appreciate_you:36 apunteme:45 are__at:-28 are__for:52 are_fine:60 around:-45 around_$:-72 arrancar:32 arrancar_$:32
ask:-117 ask_me:-40 ask_my:-77 at_$:-71 at__by:41 at__is:43 at__it:26 at_all:53 at_is:26 at_my:37 at_the:-25
at_what:51 aunque:29 baby:-45 baby_$:-45 back:26 back_$:31 back_to:25 bad:-27 bad_$:-45 ballpark:36 barato:-42
barely:-38 basta:-65 basta_$:-65 battery:-28 be:54 be_$:-62 be__and:27 be__for:-34 be__work:41 be_at:41 be_before:-26
be_best:31 be_better:-102 be_fine:38 be_there:33 because:64 before_$:68 before__pick:-27 before_i:-107 being:39
best:35 best_for:30 bien_$:79 bien__el:30 book:27 boss_is:-32 both:90 bowling:31 box:-25 box__you:-25 box_before:-25
brakes__like:28 brakes__stop:-38 brakes_squeal:27 break:36 bring:47 bus_$:-25 bus_stop:26 but:-173 but__i:-46
but__is:27 but__it:-87 but__me:54 but__need:33 but__the:-68 but_call:54 but_friday:-66 but_how:51 but_i:50 but_the:55
but_there:28 buy:-35 buzon_el:-31 by_my:-30 by_the:27 cae:156 caen:-32 calienta:25 call:-31 call__please:-60
call_me:-31 calle_estan:27 came_on:48 can__a:-30 can__be:-88 can__come:-30 can__do:-70 can__me:33 can__on:27
can__tell:-40 can__that:94 can__the:28 can_do:74 can_get:28 can_i:-36 can_it:-104 can_make:73 can_run:52 can_we:-31
can_you:-50 cant:-145 cant__thursday:-62 cant_do:-60 car:28 car__the:28 car_for:28 care_of:-29 carro__para:34
carro_prestado:44 cars:-35 cars_$:-35 casa:48 casa_$:35 casi:26 casi_no:26 chance:-59 chance_$:-37 checar:42
check_with:-35 checo:-29 cheque:73 cheque_$:27 chiste:-35 choice:56 choice_$:27 cierre:38 cita:-80 cita_$:-33
clase:-34 clase_de:-34 click:-26 close:75 close_$:28 close_to:36 cobran:-25 cold:29 come:-37 como__las:-43 como_a:-43
como_cuanto:33 como_el:-55 con:75 con_mi:-64 confirmed:29 confirmo_$:-35 conviene:37 corte:26 cost_and:-26 costo:40
could:-88 could__do:-112 could_you:-83 couldnt:68 couldnt_be:67 course:33 crazy:28 cual:-54 cual_$:27 cualquiera:63
cualquiera__los:30 cualquiera_de:46 cuanto:70 cuanto_$:-57 cuanto__de:41 cuanto__la:-25 cuanto_cobran:-25
cuanto_dura:38 cuanto_es:25 cuanto_seria:25 cuanto_toma:-36 cuatro:33 cuenta:-25 cuenta_$:-25 cuesta:-57
cuesta__cuanto:-57 da:114 da__de:26 da_igual:51 da_tiempo:27 dale:38 day:-59 day_$:-35 day_before:40 day_friday:-37
de:52 de__como:29 de__de:39 de__es:-58 de__hora:39 de__me:-43 de__no:32 de__si:-37 de__tarde:39 de__y:57
de_cuanto:-25 de_eso:-31 de_esos:33 de_esta:27 de_hacer:26 de_la:-29 de_las:73 de_los:28 de_que:-52 deal:-39
deal_$:-57 dealers:27 dealers_choice:27 decide:64 decided:-41 decided_against:-41 definitely:28 deja:-29 dejo:40
dejo_de:41 del:81 del__y:35 del_martes:30 del_viernes:50 den:31 deposito:40 derecha:29 descanso:30 descanso_$:40
despues:-25 despues__la:-42 despues__las:-26 dia:-97 dia_$:-37 dia__a:-36 dia_antes:30 dia_pero:-42 dias:-39
dice__el:38 dice_que:37 didnt:34 digame__precio:-41 digame_el:58 digame_que:-40 digo:-27 digo_$:-27 dijo:43 dime:66
dime_cuanto:35 dinero:-33 dios:30 dios_mediante:39 discount:42 do:61 do_$:-44 do__at:37 do__have:28 do__need:44
do_any:-30 do_instead:-30 do_me:-26 do_that:28 do_they:38 do_you:83 doctor:29 does:52 does_$:26 does_it:57 doesnt:-79
doesnt_matter:106 doesnt_work:-185 doing:28 doing_$:40 donde_es:-52 done_$:26 done_by:-46 door:42 dos:57 dos_$:64
driveway:27 drop_box:-25 drop_it:26 drops:45 each:-25 earlier:41 earlier_one:95 earliest:34 early:-40 early_$:-94
early_for:-26 early_one:72 easier:-48 easier__you:30 easy:38 eh:82 eh_$:52 either:88 el:71 el_$:-72 el__cuanto:65
el__dia:-47 el__el:-45 el__ese:60 el__me:61 el__mejor:-82 el__para:58 el__pero:-219 el__porque:82 el__se:31
el__tempranito:-38 el__temprano:30 el__tienen:33 el__trabajo:36 el_costo:40 el_de:100 el_del:32 el_dinero:-27
el_finde:-72 el_lunes:-90 el_martes:-133 el_mas:80 el_mismo:-41 el_primero:151 el_que:99 el_sabado:-38 el_segundo:33
el_total:30 el_ultimo:40 el_viernes:-96 else_$:-34 empezo:30 empezo_a:30 en:40 en__calle:27 en__de:-38
en__mananita:45 en__taller:-25 en__tarde:-76 en__tardecita:44 en_cual:-28 en_cuanto:-28 end:43 end_$:43 entonces:47
entro__trabajar:36 entro_a:65 es:-42 es_$:-56 es__cita:-76 es__cuanto:38 es__lo:31 es__o:30 es_en:-25 es_grave:31
es_la:-47 es_mi:26 es_rapidito:30 es_y:38 esa:102 esa__me:33 esas:-75 esas_no:-32 escoger:-48 ese:32 ese_$:53 eso:-60
eso_es:-25 eso_me:-26 esos:-39 espera:44 espere:-27 esposa:31 esposa_$:29 esta:38 esta__y:30 esta_semana:27 estare:37
estaria:-28 estoy_$:33 estoy_en:-34 evenings:-40 every:-58 exactly:30 expliqueme:33 fa:-102 fa_$:-102 falta_$:28
favor:64 favor_y:47 fecha:-55 finde:-72 finde_$:-72 fine:65 fine__me:50 fine_you:42 finger:26 first_$:-57
first_one:48 first_thing:-64 for:-50 for_$:-61 for__and:30 for_a:-26 for_friday:32 for_me:-56 for_the:48 for_this:-26
for_you:79 forget:-49 forget_it:-48 free:30 friday:28 friday_$:-32 friday__is:28 friday__time:-61 friday__would:31
friday_afternoon:35 friday_and:38 friday_but:-76 friday_is:-29 friday_it:27 friday_one:-84 friday_same:-91
friday_then:39 friday_would:48 fridays:-32 fue:-47 fue_el:-55 full:34 go:95 go__friday:53 go_for:39 go_with:53
going:62 going_to:32 good_$:-86 good_for:42 got:-88 got_anything:-76 got_it:-43 grab:87 gracias__me:36 gracias_y:34
grave:40 guess:40 guess_i:34 guys_buy:-35 hacer:40 had:-31 had_it:-27 happens:29 has:26 have_a:-47 hay_$:-41
hay_que:25 hecho:54 here:-48 hm:-167 hola:-138 hold:-34 hold_up:-29 home:27 home__i:46 hora__el:-29 hora__puedo:33
hora_de:38 hora_me:25 hora_que:-49 hour:-108 hour_$:-36 how__am:-30 how__and:40 how__hours:29 how_long:39 how_many:29
hoy:39 i:106 i__a:71 i__all:45 i__bring:-31 i__by:-46 i__for:68 i__get:28 i__how:-26 i__i:35 i__it:41 i__leave:34
i__one:-60 i__out:37 i__so:26 i__work:33 i__you:-67 i_can:95 i_come:-36 i_do:-27 i_get:-26 i_going:-27 i_got:63
i_guess:40 i_let:-38 i_like:28 i_never:33 i_plan:36 i_ride:-25 i_teach:-62 i_wait:-27 i_work:28 iba:52 iba_a:52
id__a:-35 id_need:27 if_my:-34 if_you:-32 ill:208 ill__it:54 ill__the:53 ill__there:32 ill_have:96 ill_just:25
ill_need:-27 ill_take:34 im__for:32 im__work:-54 im__you:37 im_at:-51 im_good:32 im_in:-43 imposible:-93 in:-25
in_$:-30 in__afternoon:-76 in__am:44 in__drop:-31 in__morning:31 in_for:38 in_the:-73 ingles:-34 instead:-48
instead_$:-47 is:44 is_$:27 is__a:67 is__appointment:-30 is__at:-42 is__cost:-70 is__early:25 is__going:67
is__labor:30 is__my:36 is__no:-34 is__of:57 is__on:-31 is__one:-72 is__out:29 is__price:28 is__safe:25
is__something:27 is__the:64 is__thing:51 is__with:-43 is_a:-51 is_better:75 is_cold:29 is_done:27 is_fine:27
is_full:34 is_good:60 is_it:-34 is_leaking:27 is_my:-73 is_no:-83 is_out:-111 is_over:43 is_right:34 is_still:38
is_that:-32 is_the:35 is_there:-69 is_too:25 is_tuesday:-26 is_when:-33 is_your:34 it__and:-41 it__at:-61
it__before:28 it__cold:29 it__done:27 it__have:25 it__im:-43 it__leaking:27 it__me:62 it__the:-62 it__then:45
it__to:31 it__under:32 it_again:51 it_and:-53 it_be:-88 it_cost:-36 it_friday:-50 it_is:99 it_monday:-31 it_off:43
it_overnight:37 it_safe:25 it_still:26 it_up:31 jefe:31 joven:27 jueves:28 jueves_$:46 jueves__a:-109 jueves__de:-37
jueves__el:53 jueves__la:-32 jueves__las:28 jueves__viernes:-31 jueves_pero:-60 just__you:27 just_so:27 keys:26
keys_$:47 kids:-39 kids_have:-47 know_$:27 la:206 la_$:-46 la__a:29 la__antes:26 la__cuanto:25 la__en:41 la__hora:-52
la__lo:28 la__me:37 la__no:74 la__o:27 la__tarde:37 la__viernes:34 la_cita:-48 la_cuenta:-25 la_de:42 la_del:73
la_mananita:45 la_mas:49 la_misma:-52 la_otra:27 la_segunda:43 la_tarde:-34 la_tardecita:44 la_ultima:44 la_una:-87
labor:30 lady:28 las_$:-96 las__a:54 las__bien:50 las__de:26 las__el:-43 las__no:36 las__pero:39 las__si:48
las__ya:-35 las_cuatro:32 las_dos:60 las_esta:50 las_nueve:32 las_ocho:42 las_pero:31 las_por:-71 las_que:32 last:81
last_night:36 last_one:47 late:-41 late__me:-29 lately:29 lately_$:29 later_$:-114 later_one:159 later_time:42 le:91
le__a:87 le__en:25 le_pongo:39 le_toca:-47 le_van:44 leaking:27 les:43 les__la:37 les_dejo:40 let:-70 let__know:-27
let__see:-32 let_me:-85 let_the:53 let_you:-27 libre:-29 lift:34 like:-69 like_$:-132 like_crazy:28 like_the:28
llamenme:31 llegar:32 llegar_$:32 llegue_el:-27 llevar_a:32 lleven:60 llevo_$:34 lo__para:-25 lo__que:-28 lo_mismo:47
lo_recojo:38 location:-25 lock:28 loco:-42 lonche:26 long:35 long_$:42 long_am:-30 long_should:35 looks:27
looks_like:27 los:75 los__esta:27 los__me:-34 los_de:39 los_jueves:50 lovely:31 lugar:-29 lunch_break:36 lunes_$:-104
lunes__es:31 lunes_pero:-60 main:-28 make:33 make_it:-58 make_that:55 mal:-38 mal_$:-34 manana:-25 manana__de:-34
manana_me:-25 mananita:45 mando:31 many:29 many_hours:29 martes__la:-49 martes_a:-40 martes_pero:30 martes_que:-65
mas:63 mas_$:38 mas__a:-28 mas__como:-51 mas__el:-38 mas_barato:-42 mas_pronto:28 mas_temprano:76 matter:107 may:26
maybe:-57 maybe_next:-36 me:53 me_$:32 me__a:38 me__after:36 me__al:26 me__bien:28 me__el:-84 me__i:46 me__la:55
me__lo:46 me__mal:-33 me__mejor:67 me__monday:-26 me__my:-47 me__the:29 me__thursday:25 me__tiempo:27 me__we:-26
me__work:40 me__you:-27 me__your:-28 me_a:-38 me_and:28 me_back:28 me_conviene:37 me_da:87 me_fue:-55 me_hace:36
me_how:-28 me_in:52 me_la:30 me_llegue:-27 me_lleven:60 me_lo:-31 me_next:-26 me_off:-31 me_over:-35 me_please:-60
me_quedan:29 me_sale:-54 me_see:-32 me_sirve:-34 me_sirven:41 me_so:-25 me_the:87 me_tienen:33 mechanic_$:28 media:53
mediante:39 medio_dia:-36 meeting:44 mejor:-52 mejor__lunes:-94 mejor_el:-61 mejor_la:42 menos:56 menos__lunes:60
menos_cuanto:29 menos_el:60 metal:81 metal__metal:40 mi:53 mi_$:43 mi__de:-27 mi__dice:44 mi__y:-44 mi_esposa:31
mi_jefe:-28 mi_lonche:26 mi_nino:26 mi_tio:-37 mid:33 mind_$:38 mismo__pero:-42 mismo__que:47 mismo_dia:-41 modo:49
moms:-30 monday_$:63 monday__be:-63 monday_after:43 monday_am:-51 monday_at:-45 monday_but:-101 monday_is:38
monday_please:42 monday_would:-63 morning:91 morning_one:47 mornings:-25 much__how:40 much__is:-28 much__it:-31
much_and:40 muy:-90 muy_temprano:-95 my:107 my__at:30 my__break:36 my__day:-30 my__going:29 my__has:28 my__just:27
my__off:25 my__phone:58 my_boss:-70 my_day:29 my_driveway:27 my_end:43 my_lunch:32 my_moms:-30 my_shift:-31 my_son:55
my_total:29 my_work:43 n:43 nada:-51 nada__eso:-30 nada_de:-30 nadie:31 nd:91 nd_$:28 nearly:34 necesito:42
necesito__me:51 necesito_que:47 need:82 need__car:39 need__lift:54 need__ride:32 need_it:37 need_to:29 neither:-164
nel:-30 never:27 next:-82 next__at:-27 next_monday:-26 next_week:-42 ni:-148 ni_de:-35 ni_el:-43 ni_la:-108
ni_modo:49 nine:33 ninguna:-57 ninguna_me:-50 ninguno:-62 ninguno__los:-46 ninguno_de:-46 nino:26 nitido:39 no:-127
no_$:-121 no__a:-29 no__do:-38 no__el:117 no__en:86 no__i:28 no__la:85 no__problema:66 no__puede:-29 no__sirve:-58
no__to:-40 no__viernes:-34 no__with:64 no_can:-38 no_el:-34 no_espera:44 no_good:-125 no_hay:-35 no_le:41 no_me:-70
no_mejor:52 no_perdon:79 no_problem:97 no_puedo:-87 no_salgo:32 no_tengo:75 no_thanks:-63 no_way:28 nomas:34
none:-132 none__those:-42 none_of:-81 noon:-60 noon_$:-131 nop:-57 nos:75 nos_vemos:79 not:-89 not_$:49 not__but:55
not__one:35 not_friday:-98 not_one:-46 not_the:-80 not_this:58 nueve:32 number:82 numero:40 o:100 o__cuanto:29
o_es:26 o_lunes:51 o_viernes:-39 ocho:50 oclock:31 ocupo:51 of:94 of__is:49 of_all:-41 of_course:33 of_them:45
of_those:64 off:80 off_so:30 off_your:-28 oil:31 oil_can:27 ojala:25 ok:53 ok_$:-40 ok__a:25 ok__it:25 ok__me:49
ok_ill:26 ok_is:46 ok_yes:-31 on:-81 on__at:-58 on__driveway:38 on__end:43 on__rd:-33 on_a:-32 on_friday:-91 on_my:65
on_this:36 on_thursday:-43 once_the:-25 one:212 one_$:-98 one__i:72 one__much:86 one__those:-58 one_and:53 one_how:79
one_i:116 one_of:-99 one_or:-28 one_please:69 ones:-40 only:-56 opcion:67 opcion_$:44 open:26 open__me:54 open_for:54
option:58 or:50 or__it:-27 or__other:-28 or_the:-27 orale:28 other:30 other_one:-36 otherwise:39 otra__que:55
otra_fecha:-55 otra_vez:66 otro_$:27 out:-83 out_$:-85 out__me:-67 out_for:-67 out_of:38 over:-26 over_$:48
over__phone:-34 over_the:-33 overnight:37 overnight_$:37 pagar:41 pagar_$:25 para:37 para_el:-49 para_no:58 parar:-71
parar_$:-71 pasa:-25 pasame:25 perdon:66 perdon_$:79 pero:-53 pero__a:46 pero__antes:34 pero__la:-55 pero__las:-133
pero__le:-55 pero__otra:53 pero__que:34 pero_a:-140 pero_cuanto:25 pero_en:-54 pero_ocupo:32 pero_que:-59 pero_voy:46
person:-35 person_i:-25 pick:107 pick_$:47 pick__up:32 pick_it:32 pick_one:-27 pick_up:59 place:-25 plan:35
plan_for:48 please_$:-128 please__a:25 please__is:32 please__me:-28 please_do:28 please_i:41 please_take:-28 plis:35
plis_$:35 pm:64 podria:-61 podria_ser:-51 pongo:39 poquito:-31 por__manana:-28 por__y:47 por_el:28 por_fa:-102
por_favor:78 por_mi:31 porque:46 porque__a:-36 porque_el:66 porque_se:25 possible:-45 possible_$:-45 precio:-29
precio_tiene:-41 prefiero:31 prefiero_el:31 prestado:43 prestado_para:33 presupuesto:25 price:41 primera_$:-48
primero:28 primero_$:-72 primero_que:33 problem:82 problema:66 puede:-37 puede_$:-25 puedo_$:-75 puedo__asi:26
puedo_llegar:32 pues:55 put:56 put__in:36 put_me:48 que:133 que__es:-30 que__estan:27 que__la:-50 que__le:39
que__lleven:60 que__por:-51 que__tiene:-41 que__toca:-47 que__van:44 que__y:42 que_calle:27 que_direccion:-39
que_el:41 que_hora:-58 que_no:51 que_se:40 que_tiene:31 que_viene:-75 queda_$:-87 quedamos:-35 quedamos_$:-35
quedan:52 quedo:31 quick:29 quien:-28 quien_me:-27 quiero:27 quiero__de:36 quiero__el:-29 quiero_la:36 quit:-74
quit_$:-74 quiten:36 rapidito:30 rate:30 rate_$:30 rd:-29 rd_$:-57 re:-28 read:34 recojo:38 red:29 red_light:27
revoke:-76 ride__work:31 ride_to:44 right_after:30 ring:26 run:35 run_me:55 sabado:-30 safe:25 safe__drive:25
safe_to:25 saldria:-37 saldria_$:29 sale:-26 sale__barato:-42 sale_mas:-42 salgo:54 salgo_antes:46 same:-109
same_hour:-48 same_time:-61 saturday:-35 saturday_$:-44 saturday_morning:-28 says:53 scale:-32 school:-31
school_$:-47 se:50 se__fue:-55 se_calienta:25 se_la:28 se_me:-35 se_puede:-29 second:96 second_$:40 sedan:-33 see:31
see__my:-32 see__then:79 see_yeah:27 see_you:52 segunda:48 segunda_$:-49 segundo:33 segundo_$:62 seguro:-34
seguro_$:-27 ser:-36 ser_mas:-28 seria:-30 seria_$:-28 set__back:27 set_me:27 should:50 should__be:-32
should__plan:36 should_i:33 si_$:-87 si__cuanto:29 si__en:-48 si__quiero:31 si__y:34 si_a:36 si_aunque:29 si_el:-33
si_gracias:27 si_me:36 si_pero:73 si_puedo:73 siempre_$:31 siendo:28 sigue:26 sin:48 sin_falta:28 since:38 sipi:66
sirve_$:-74 sirven:41 sleep:44 slot:60 so:92 so__know:28 so__to:30 so_friday:63 so_we:-25 so_yes:26 so_you:27
sold__the:-33 somebody:34 somebody__me:37 someone:42 something:-26 son:43 son__it:43 soonest:76 sorry:-29 sorry_$:-36
sort:-25 sounds_good:38 squeal:27 start:31 started:25 still:37 still_$:26 stop:25 stop_$:-38 street:-25 su__de:38
suena:26 suits:30 suits_me:28 sure__is:30 sure__long:44 sure_how:44 sure_thing:43 take:59 take_$:36 take__off:-31
take_a:-62 take_it:44 take_me:-31 take_the:106 talkin:52 talkin_$:52 tarde:-41 tarde_$:-38 tarde__a:-43 tardecita:44
te:-52 teach:-62 tell:-31 tell_you:-44 tempranito:-38 tempranito_$:-38 temprano_$:-25 temprano_a:72 tendran:-55
tener:32 tener_que:32 tengo:26 tengo__con:66 tengo_corte:26 tengo_que:-45 texting:-28 texting_$:-28 th:-145 th_$:-48
th_is:-66 thanks_$:26 that:60 that_$:-45 that__all:64 that__be:84 that__is:25 that__like:27 that__my:-77
that__when:-31 that__work:-26 that_a:31 that_is:-72 that_time:70 that_will:52 that_works:41 that_would:84 the:204
the__after:-36 the__appointment:48 the__are:-37 the__before:25 the__box:-25 the__for:-47 the__going:-25 the__ill:25
the__is:-92 the__ones:-40 the__please:-30 the__slot:28 the__street:-28 the__time:50 the__two:66 the__was:-33
the__what:66 the_address:-35 the_afternoon:-47 the_am:74 the_appointment:-29 the_baby:-45 the_bus:-25 the_cost:-35
the_drop:-25 the_early:49 the_first:60 the_friday:-46 the_later:113 the_lobby:27 the_monday:26 the_morning:31
the_other:30 the_phone:-34 the_pm:78 the_rd:-32 the_second:40 the_sedan:-33 the_th:-145 the_thing:36 the_thursday:-38
the_total:-48 the_two:26 the_weekend:33 the_wheel:-33 the_work:26 them:41 then:-31 there__day:46 there__no:28
there_all:56 there_for:-29 they:25 they__it:37 thing:51 think_so:26 third:44 this:-36 this__to:45 this_going:45
this_is:-46 this_morning:-32 this_one:65 those:-57 those_$:99 three_$:-76 thumbsup:70 thurs_after:-36 thurs_at:31
thursday:52 thursday_$:55 thursday__friday:45 thursday__is:-32 thursday__it:47 thursday__my:28 thursday__the:61
thursday__work:-65 thursday_at:36 thursday_but:-100 thursday_what:-27 tiempo:37 tiempo_de:26 tienen__el:-45
tienen_donde:33 til:52 til__th:-29 til_the:-29 time_$:-40 time_after:-33 time_is:52 tio:-37 to:76 to__after:38
to__at:42 to__it:45 to__me:48 to__on:-49 to__til:25 to__with:-35 to_a:-36 to_bring:33 to_check:-35 to_drive:25
to_pick:49 to_set:27 to_the:-31 to_work:28 to_you:31 toca:-59 toca_$:-47 todo:33 todo_$:35 toma_$:25 tomorrow:-37
tomorrow_$:-106 tomorrow__do:30 tomorrow__is:34 tomorrow_it:34 tomorrows:41 too:-145 too_$:56 too__for:-55
too_early:-153 too_late:-44 took:-30 total:32 total_$:61 trabajar:29 trabajar_$:65 trabajo_$:-39 trae:32 tres:32
try:-53 try_me:-53 tues_at:41 tuesday:-52 tuesday_$:-25 tuesday__is:63 tuesday_at:26 tuesdays:55 turn:-28
turn_the:-27 twist:29 two:162 two_oclock:54 ugh:26 ultima:52 ultimo:40 un:84 un__al:32 un__antes:30 un_dia:30
un_poquito:-31 una:-70 under_$:32 uno:85 up:82 up__you:41 up_my:34 usted:33 usted_$:40 ustedes:25 uy:-38 va:-51
va_$:-130 va_a:50 van:34 van_a:44 vemos:79 vemos_$:49 vez:45 vez_que:55 viene:-75 viernes_$:-48 viernes__el:26
viernes__favor:52 viernes__la:-57 viernes__las:63 viernes__que:42 viernes_a:31 viernes_me:72 viernes_no:32
viernes_pero:-93 viernes_por:44 viernes_tempranito:-38 voy__tener:32 was:-40 was__on:-33 water:42 way_too:-46
we__a:-31 we_can:31 we_do:-43 we_have:-49 we_talkin:52 wed:29 wednesday:25 weds:31 week:-54 week_$:-35 were:-38
what:-44 what__i:35 what__it:-38 what__my:29 what__the:-44 what__you:-28 what__your:34 what_about:-41 what_am:27
what_is:25 what_would:-27 whatever:39 wheel:-25 when__i:28 when__is:29 when_i:-47 when_it:29 which__is:-48
whichever:52 while__do:27 who:-65 who__this:-48 who_is:-48 why:38 why_not:49 why_would:-27 wife:-30 will:89
will__be:51 wise:30 wise_$:30 with__at:64 with_it:-25 with_me:48 with_the:-63 wont:-64 wont_work:-64 work:27
work_$:-76 work__me:-100 work_after:49 work_for:-104 work_on:43 work_phone:58 working:-56 works:44 works_$:-32
works_for:25 worried:-32 would:-68 would__best:31 would__better:-169 would__fine:41 would__need:-27 would_be:34
would_i:-56 wrong:-37 wrong__i:-25 wrong_person:-25 y__cobran:-25 y__dura:38 y__hace:36 y__me:29 y__o:29 y__total:30
y_es:31 y_me:58 y_media:56 y_no:54 y_te:-52 y_va:-151 y_ya:-44 ya:-41 yes__can:-31 yes__i:37 yes__what:25 yes_but:85
yes_i:-32 yes_please:-49 yes_what:-25 you:85 you_$:68 you__anything:-43 you__buy:-35 you__me:-27 you__much:31
you__my:28 you__tomorrow:-27 you_can:-31 you_close:39 you_do:-85 you_got:-72 you_pick:47 you_then:52 you_tomorrow:-42
your__on:26 your_address:34 youre:47 zero:-93
"""
