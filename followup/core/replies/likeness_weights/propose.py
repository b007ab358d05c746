"""What speaks for and against `propose`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "propose"
BIAS = -208
WEIGHTS = """\
#abad:181 #able:96 #abor:-44 #abou:157 #abra:48 #abre:-75 #abri:27 #acer:-30 #acio:125 #acom:28 #adel:-34 #adit:28
#ados:-95 #afte:120 #ahor:-56 #aila:85 #ajan:-95 #akin:27 #ales:-38 #alga:-38 #algo:103 #alie:78 #alqu:169 #also:62
#ambi:-88 #amel:-27 #ampe:-37 #anan:82 #ance:-76 #ando:42 #ange:-39 #anit:42 #anme:-28 #anos:27 #anso:30 #anta:-35
#ante:68 #anto:27 #anyt:191 #apri:29 #aqui:37 #ario:-116 #arli:102 #arly:98 #aron:-48 #arou:67 #arte:116 #arzo:-73
#asap:434 #asar:-29 #asta:-92 #aste:-58 #ater:76 #atev:67 #athe:-26 #atur:71 #avai:113 #avia:-33 #avid:-34 #avis:-34
#aybe:93 #ayda:-26 #baby:-31 #bado:162 #baja:-117 #bajo:93 #befo:106 #bett:83 #betw:59 #biar:-33 #bien:27 #bila:45
#bout:157 #brak:60 #brea:37 #bren:-80 #caci:31 #cale:-34 #call:-75 #camb:-90 #came:-55 #canc:-78 #cans:31 #casi:25
#cept:29 #cerr:-66 #cesi:54 #chec:-29 #ched:-59 #chev:79 #choo:64 #cial:-41 #cion:32 #cita:40 #cked:-43 #clas:61
#clos:56 #coge:-26 #cole:128 #come:-54 #como:63 #comp:-31 #conf:-44 #coul:127 #crib:-53 #cual:82 #cuan:58 #cuel:37
#davi:-32 #days:-53 #deal:28 #deja:-43 #dela:-34 #deme:-27 #depe:-80 #desp:46 #diga:27 #digo:-109 #ding:32 #dito:32
#dnes:58 #domi:-35 #door:47 #down:30 #dred:-58 #dria:87 #driv:-37 #drop:101 #dule:-50 #eall:28 #eals:-25 #earl:198
#ease:26 #east:-45 #eces:35 #ecia:-47 #ecio:-37 #ecit:25 #edal:-27 #edan:136 #eded:-35 #edio:55 #edne:64 #edul:-50
#eede:-35 #eeke:40 #eeks:-68 #eers:-27 #eeze:34 #efer:27 #efie:-25 #efor:106 #egar:-38 #egue:-39 #egun:-38 #eith:73
#ejar:-27 #ekda:26 #eken:40 #elan:-29 #elev:28 #eman:125 #emin:-76 #emos:-37 #empr:46 #ende:-80 #endi:-26 #endo:50
#endr:101 #ends:-36 #enen:39 #ener:-30 #enev:168 #enga:172 #engi:26 #enin:161 #enme:-47 #enos:117 #entr:123 #epen:-81
#eran:27 #erco:122 #ermi:-25 #erne:86 #eron:-38 #erra:-51 #esas:90 #esca:33 #escr:-48 #escu:34 #esda:157 #esit:51
#esos:64 #espa:72 #espe:-72 #espu:43 #essa:-45 #esta:-160 #este:-25 #esto:31 #eter:40 #etim:42 #etir:98 #ette:87
#etwe:59 #evar:45 #even:78 #ever:131 #eves:85 #exce:26 #exti:-30 #feri:-35 #ffic:26 #fice:28 #fill:-40 #find:26
#firm:-39 #firs:71 #fore:94 #forg:-31 #fort:-25 #four:-28 #free:74 #fren:-27 #fres:-50 #frid:123 #from:87 #fter:114
#gent:-60 #gine:26 #give:-112 #gles:25 #goin:28 #good:33 #gran:32 #grea:-55 #grin:29 #gual:33 #guen:-26 #guie:36
#guna:31 #gunt:-42 #guys:-59 #habr:45 #hace:-29 #hake:-78 #haki:28 #half:43 #hanc:25 #hang:-26 #hast:-79 #hate:67
#have:116 #heck:-31 #hedu:-50 #hene:168 #heve:79 #hich:77 #hijo:-27 #hing:53 #hird:-42 #hold:-32 #hool:59 #hora:-137
#hori:-37 #hort:30 #hose:128 #houg:25 #hour:48 #humo:-60 #hund:-52 #hurs:105 #iado:-44 #ible:237 #ibre:53 #iche:79
#idad:-42 #iday:141 #idea:-42 #iemp:-27 #iend:64 #iene:93 #ient:41 #iera:35 #ierc:143 #iern:81 #iero:-47 #ierr:47
#iest:33 #ight:41 #igua:33 #igue:-50 #igui:30 #ilab:88 #ilad:40 #ille:-39 #imer:57 #inde:35 #ingo:-30 #ings:120
#insp:36 #inst:93 #ione:33 #iper:31 #ired:72 #ires:-39 #irmo:-55 #irst:71 #isie:38 #isit:-30 #ismo:48 #itch:-79
#iter:25 #ithe:72 #jaja:-47 #jubi:45 #juev:96 #just:-33 #kday:26 #kend:40 #kids:66 #king:74 #labl:85 #labo:-44
#lace:-52 #lado:49 #lase:26 #lass:35 #late:77 #ldnt:-25 #leas:31 #lega:-43 #lego:33 #legu:-40 #lets:-25 #leva:44
#libr:55 #lien:68 #lier:82 #like:105 #llam:-26 #lled:-36 #lleg:-43 #lose:39 #lqui:169 #lueg:-34 #luga:38 #lune:174
#make:28 #mana:207 #mand:-29 #mart:126 #marz:-73 #matt:25 #mayb:93 #mbia:-66 #medi:77 #mela:-36 #meno:117 #mera:52
#mero:-25 #mess:-46 #meti:41 #mier:164 #mina:-29 #mind:-108 #mine:-36 #mism:56 #moda:29 #mond:137 #more:-48 #morn:36
#morr:97 #moth:31 #move:-84 #movi:-37 #mped:-27 #mpra:65 #mpre:-28 #much:-41 #myse:-38 #nana:71 #navi:-34 #ncel:-77
#nday:69 #ndra:82 #ndre:-58 #nece:46 #need:32 #neit:55 #nero:-34 #ners:-32 #nesd:64 #nest:93 #neve:80 #next:244
#nfir:-39 #ngan:146 #nged:-36 #ngin:35 #ngos:-29 #nico:40 #nigh:-83 #nine:52 #ning:184 #nish:25 #nito:29 #nner:-30
#noma:31 #none:67 #noon:36 #nspe:36 #nste:78 #ntem:-38 #ntes:91 #ntra:50 #ntre:59 #nudg:-25 #nyth:135 #ocho:35
#odav:-32 #odri:76 #offi:28 #oger:-27 #okin:35 #oles:126 #omas:44 #omes:-50 #omod:32 #omor:103 #onda:144 #oner:68
#ones:97 #onfi:-40 #only:66 #onta:27 #onto:130 #oone:150 #oors:37 #open:70 #oqui:35 #orar:-108 #oras:-43 #orit:-31
#orks:28 #orni:33 #orqu:54 #orre:-29 #orro:99 #osib:153 #ossi:100 #osto:-27 #otat:42 #othe:31 #ough:31 #ould:112
#oupo:-29 #oure:30 #ours:-39 #ovin:-35 #oxim:47 #paci:87 #para:103 #part:-48 #pasa:-38 #pase:-44 #paso:34 #past:31
#payd:-26 #peci:-40 #pect:32 #peda:-29 #pend:-92 #peni:109 #pera:-34 #pero:98 #pick:77 #ping:27 #plac:-55 #plea:30
#podr:74 #pons:-28 #poqu:31 #porq:52 #posi:136 #poss:101 #pran:53 #prec:-38 #preg:-42 #pren:-29 #pril:26 #prim:51
#pron:173 #prox:48 #pued:316 #puer:-36 #pues:35 #pull:28 #quee:48 #quie:154 #quin:33 #quis:38 #quit:58 #rade:-38
#rado:-68 #rake:60 #rani:32 #rano:35 #rari:-107 #rcol:142 #rdan:-26 #rday:64 #read:-29 #reak:26 #real:44 #reat:-58
#rece:-30 #reci:-39 #reco:-33 #refe:27 #refi:-25 #regu:-46 #remi:-76 #rend:-29 #reno:-26 #resh:-41 #reti:97 #rgen:-53
#rida:128 #righ:86 #rime:57 #rimo:30 #rind:29 #ring:-30 #rita:-27 #rivi:-30 #rlie:102 #rmin:-27 #rnes:87 #rnin:29
#roca:25 #rong:-57 #ront:166 #rota:47 #roun:57 #roxi:47 #rque:38 #rrad:-80 #rrar:25 #rrow:110 #rtes:138 #ruck:32
#saba:181 #sage:-41 #said:-28 #sala:-30 #sale:-71 #sali:66 #same:-55 #sand:-25 #satu:71 #scan:32 #sche:-50 #scho:59
#scri:-53 #scue:36 #sday:175 #self:-36 #sema:133 #send:-33 #shak:-49 #shop:-50 #shor:29 #shou:-25 #sibl:254 #siem:-26
#sier:39 #sito:40 #smok:33 #sold:26 #soon:184 #soun:-32 #spac:82 #spar:27 #sper:-49 #spue:43 #sque:52 #ssag:-45
#ssed:-39 #ssib:101 #stan:-81 #stea:69 #sted:31 #ster:-39 #stop:-32 #suit:40 #sund:-43 #swam:-27 #swap:-35 #swit:-84
#take:39 #tart:29 #tead:78 #tely:26 #teme:-38 #temp:66 #tend:90 #teng:189 #tera:37 #term:-27 #ters:25 #tery:-27
#test:41 #teve:68 #text:-87 #than:-34 #that:38 #then:82 #ther:67 #thin:49 #thos:128 #thur:108 #tien:80 #till:-46
#time:92 #tipo:44 #tira:27 #tire:44 #tmrw:38 #told:-26 #tomo:84 #trad:-27 #trae:37 #trai:-32 #tran:31 #trip:34
#troc:25 #truc:33 #tter:78 #ttin:33 #tues:180 #turd:71 #twee:60 #ualq:169 #uand:53 #ubil:45 #udge:-32 #ueda:203
#uedo:106 #ueez:42 #uego:-48 #uela:37 #uero:-31 #uesd:94 #ueve:79 #ugar:38 #uien:27 #uier:155 #uisi:38 #uito:70
#uits:27 #uldn:-25 #unas:-26 #unda:-64 #undo:32 #undr:-58 #unds:-26 #unes:174 #unos:-49 #unte:-53 #urda:71 #urge:-49
#urno:36 #uste:63 #vail:113 #varl:25 #vean:32 #veni:60 #vers:-30 #very:-74 #vete:27 #vida:-43 #vier:93 #ving:-36
#visi:-25 #wamp:-27 #want:25 #wedn:64 #weds:35 #week:126 #ween:61 #went:-31 #were:-35 #what:54 #when:134 #whic:78
#whol:-26 #wifi:-27 #wipe:31 #witc:-84 #with:-26 #work:58 #writ:-29 #wron:-57 #xcep:26 #xima:35 #xtin:-30 #year:-30
#your:43 #ysel:-38 #ythi:126 %again_later:136 %again_later%agree:72 %again_later%bring:119 %again_later%busy:-55
%again_later%call_off:58 %again_later%car:-43 %again_later%doubt:-111 %again_later%fails:43 %again_later%family:51
%again_later%gone_car:25 %again_later%lift:-26 %again_later%money:-30 %again_later%odometer:-76
%again_later%on_way:65 %again_later%opening:109 %again_later%pay_day:-140 %again_later%phone:-34
%again_later%refuse:36 %again_later%season:-130 %again_later%shift_it:33 %again_later%staff:28
%again_later%wrong_one:43 %agree:68 %agree%bring:-45 %agree%call_off:69 %agree%car_part:35 %agree%elsewhere:59
%agree%fails:42 %agree%family:95 %agree%gone_car:30 %agree%how_long:126 %agree%leave_me:44 %agree%machine:29
%agree%meaning:39 %agree%odometer:91 %agree%opening:54 %agree%pay_day:50 %agree%phone:81 %agree%place:26
%agree%question:44 %agree%season:63 %agree%smoke_smell:-49 %agree%staff:36 %agree%thanks:36 %agree%wrong_one:104
%away:-28 %away%call_off:-43 %away%car:-44 %away%fails:34 %away%gone_car:36 %away%how_long:28 %away%lift:79
%away%odometer:41 %away%on_way:76 %away%opening:31 %away%question:28 %away%refuse:-29 %away%shift_it:-33
%bad%machine:28 %bad%shake:29 %bring:106 %bring%call_off:-40 %bring%car:80 %bring%car_part:70 %bring%fails:48
%bring%family:36 %bring%noise:33 %bring%odometer:-55 %bring%on_way:-25 %bring%opening:70 %bring%phone:29
%bring%question:50 %bring%shift_it:-143 %bring%start_again:40 %busy:58 %busy%call_off:39 %busy%family:-25
%busy%leave_me:50 %busy%meaning:42 %busy%on_way:27 %busy%refuse:61 %busy%season:-57 %call_off%doubt:46
%call_off%gone_car:-55 %call_off%how_long:68 %call_off%lift:28 %call_off%message:-66 %call_off%money:33
%call_off%on_way:28 %call_off%opening:47 %call_off%phone:-49 %call_off%place:34 %call_off%refuse:146
%call_off%season:-106 %call_off%shift_it:92 %call_off%start_again:-37 %call_off%thanks:-35 %call_off%who:-26
%call_off%wrong_one:48 %car%family:33 %car%gone_car:-56 %car%lift:50 %car%place:-25 %car%question:-26 %car_part:65
%car_part%do_it:65 %car_part%fails:33 %car_part%money:57 %car_part%noise:42 %car_part%opening:25
%car_part%shift_it:49 %car_part%start_again:25 %do_it:-130 %do_it%elsewhere:-25 %do_it%family:-25 %do_it%how_long:-48
%do_it%on_way:30 %do_it%opening:35 %do_it%question:30 %do_it%refuse:27 %doubt:-33 %doubt%question:26
%doubt%season:-36 %doubt%shift_it:-70 %elsewhere:-53 %elsewhere%place:51 %elsewhere%refuse:43 %elsewhere%season:-30
%elsewhere%wrong_one:-43 %fails%how_long:-26 %fails%phone:31 %fails%refuse:-46 %fails%shift_it:-29
%fails%smoke_smell:25 %fails%start_again:40 %family:-41 %family%leave_me:26 %family%odometer:-25 %gone_car%phone:58
%gone_car%season:-31 %how_long:202 %how_long%leave_me:55 %how_long%meaning:26 %how_long%opening:-53
%how_long%pay_day:-36 %how_long%question:-178 %how_long%refuse:58 %how_long%wrong_one:52 %leave_me:55
%leave_me%message:-49 %leave_me%on_way:-27 %leave_me%pay_day:47 %leave_me%season:40 %leave_me%shift_it:34
%leave_me%start_again:-25 %lift%on_way:29 %lift%opening:37 %lift%question:-25 %lift%refuse:47 %lift%wrong_one:25
%machine:63 %machine%meaning:26 %machine%shake:29 %machine%staff:32 %machine%wrong_one:29 %meaning%question:-90
%meaning%shake:28 %message:-172 %message%on_way:-47 %message%start_again:33 %money:-160 %money%question:45
%money%season:-40 %money%shift_it:-52 %money%smoke_smell:-50 %money%wrong_one:-51 %odometer:27 %odometer%question:28
%odometer%staff:27 %on_way:61 %on_way%place:85 %on_way%refuse:58 %on_way%season:30 %on_way%shift_it:39 %opening:-230
%opening%place:-86 %opening%question:-87 %opening%refuse:39 %opening%staff:-89 %opening%wrong_one:70 %pay_day:-81
%pay_day%question:-47 %pay_day%refuse:-26 %pay_day%shift_it:-58 %phone:-147 %phone%question:-34 %phone%refuse:80
%place%refuse:64 %place%shift_it:-29 %place%start_again:28 %question%refuse:43 %question%season:-27
%question%shake:-28 %question%who:-42 %refuse:80 %refuse%season:-87 %refuse%shift_it:78 %refuse%wrong_one:36
%season:-122 %season%shift_it:-129 %season%start_again:-43 %season%thanks:-26 %season%wrong_one:-68 %shake:-70
%shift_it:76 %shift_it%wrong_one:-48 %smoke_smell:-78 %staff:-95 %staff%start_again:28 %staff%wrong_one:-41
%thanks:-78 %who:-71 %wrong_one:-32 @?:62 @after_visit:-181 @car:-151 @confirm:-1301 @confirm_stop:-98 @day:396
@later:-129 @nothing:-476 @odometer:-276 @offers:-367 @offers_:-124 @offers_a_las:-87 @offers_the_th:-92 @reading:55
@time:440 @times:432 ^_$:-259 ^_a:81 ^_afternoon:-44 ^_all:-38 ^_am:-32 ^_antes:-30 ^_any:234 ^_are:-87 ^_as:56
^_asap:243 ^_ask:-41 ^_at:56 ^_call:-94 ^_can:-62 ^_cancel:-45 ^_changed:-25 ^_check:-35 ^_could:38 ^_cual:-81
^_cualquier:127 ^_cualquiera:-26 ^_cuando:72 ^_cuanto:-56 ^_day:25 ^_depende:-52 ^_do:-141 ^_early:38 ^_el:-132
^_end:43 ^_entre:53 ^_es:-72 ^_esas:34 ^_esta:-25 ^_estan:-86 ^_estoy:-26 ^_fri:35 ^_friday:-119 ^_give:-77 ^_got:51
^_half:27 ^_hasta:-50 ^_have:33 ^_hours:49 ^_how:-109 ^_hoy:71 ^_id:56 ^_idk:-40 ^_in:79 ^_it:-34 ^_la:-141 ^_last:29
^_lets:-54 ^_lo:149 ^_make:44 ^_manana:52 ^_martes:28 ^_maybe:52 ^_me:-62 ^_mon:45 ^_morning:-32 ^_muy:-26 ^_my:60
^_necesito:25 ^_neither:56 ^_new:-30 ^_next:145 ^_ninguna:37 ^_none:68 ^_noon:35 ^_not:-27 ^_ok:-36 ^_open:-173
^_para:-80 ^_please:-34 ^_podria:31 ^_por:-26 ^_prefiero:-27 ^_que:-104 ^_quiero:33 ^_remind:-76 ^_right:38
^_sabado:31 ^_saliendo:25 ^_sat:76 ^_saturday:49 ^_se:-53 ^_see:-29 ^_si:-57 ^_stop:-52 ^_sunday:53 ^_sure:26
^_swamped:-33 ^_the:-137 ^_there:-27 ^_this:39 ^_those:30 ^_thursday:-66 ^_today:31 ^_tomorrow:64 ^_trabajan:-75
^_try:-145 ^_tues:66 ^_tuesday:46 ^_un:37 ^_una:30 ^_wed:89 ^_what:-32 ^_whatever:25 ^_when:-39 ^_whenever:160
^_which:-47 ^_whichever:69 ^_will:-37 ^_works:-26 ^_ya:-42 ^_yeah:36 ^_yo:36 ^_you:-49 a:92 a__de:27 a__hora:127
a__no:29 a__of:26 a__si:44 a__weeks:-46 a__y:43 a_call:-27 a_day:-29 a_esa:36 a_hole:37 a_la:83 a_las:182 a_monday:43
a_primera:27 a_ring:-63 a_saturday:-36 a_tuesday:40 about:158 abren:-80 abren_$:-81 adelante_$:-25 after:125
after_$:51 after__day:-38 after_i:32 after_that:31 after_work:33 afternoon:-26 afternoon_one:-36 again_on:-28
ahorita:-37 al:50 algo:74 algo_el:40 all__thing:-29 all_day:-39 also:62 am:141 am_$:31 am_y:27 an:150 an__change:33
an_appointment:32 an_inspection:31 an_oil:32 an_opening:60 and:200 and__have:26 and__is:27 and__long:26 and__need:-37
and_can:29 and_how:36 and_i:-26 and_im:43 and_we:28 and_what:26 ando:26 antes:95 any:386 any__but:79 any__next:44
any__of:-27 any__that:31 any__those:26 any_day:169 any_of:39 any_time:68 anything:111 anything_$:-37 anything__the:26
april:26 aqui:26 are:-118 are__there:-55 are_you:-106 are_your:-60 around:69 around_$:37 as:148 as__as:67 as__can:33
as__have:29 as_of:-53 as_you:67 asap:434 asap_$:204 asi_que:38 ask:-199 ask__after:-35 ask__again:-42 ask_me:-162
at:74 at__so:34 at_and:51 at_instead:-33 at_noon:-49 at_or:-61 at_work:-52 available:88 baby:-30 bad:28 be:158
be_$:34 be__day:26 be_better:45 be_the:48 before:106 before__open:25 before_the:43 before_you:29 better:83
better_$:64 between:59 bien:33 brake:25 brakes:36 break:26 bus:37 but:256 but__is:25 but__it:57 but_it:-40
but_monday:74 but_the:39 by:61 by_tomorrow:30 call:-80 call_me:28 came:-50 can:264 can__be:66 can__come:59
can__do:136 can__it:61 can__me:64 can__stop:38 can__switch:-56 can_i:31 can_it:48 can_my:-29 can_we:-27 can_you:48
cancel:-74 cancel_my:-54 cant_make:-33 car:-43 carro:-30 casi:25 chance:26 changed:-25 changed_it:-31 check:-51
check__me:-44 check_with:-46 christmas_$:-30 cita:26 cita_$:-44 cita__favor:34 cita_el:40 cita_para:29 cita_por:34
clock:33 close_$:28 come__friday:41 come__instead:-60 come_at:-38 come_in:44 come_thursday:30 comes:-50 como:30
como__las:47 como_a:34 con:-87 con_el:-27 con_ustedes:-37 confirmo:-55 confirmo_$:-48 cost_and:29 costo:-42
costo_$:-31 could:148 could__do:57 could__it:31 could__the:26 could_do:57 could_you:37 coupons:-28 cual:-79
cual__su:-57 cual_es:-61 cualquier:184 cualquier__menos:73 cualquier_dia:144 cualquiera_de:-30 cuando:43
cuando__el:-28 cuando_lo:-34 cuando_salga:-34 cuanto_$:-25 cuanto_se:86 da:35 da__el:27 da_igual:38 date:-25 day:199
day_$:-92 day__monday:54 day_after:75 day_but:67 day_is:49 day_thing:-32 de:71 de__a:62 de__al:33 de__dia:-43
de__dos:-32 de__el:33 de__la:-29 de__me:42 de__semana:30 de_aqui:27 de_esas:26 de_la:33 de_las:-60 de_los:35
de_manana:-41 de_mes:50 de_paso:27 deal:32 deal_$:38 dejo_en:-47 del:-29 del_jueves:-65 depende:-51 depends:-29
descanso:30 despues:43 despues_$:-29 despues__las:36 despues_del:39 di:-31 dia:210 dia__el:80 dia_de:45 dia_menos:102
dia_que:42 dias_$:33 digame:-28 digan:26 digo:-108 digo_$:-78 do:133 do__at:-28 do__guys:-39 do__have:-38
do__instead:38 do__th:59 do__work:-27 do_friday:54 do_instead:98 do_the:48 do_thursday:-31 do_you:-125
doesnt_matter:28 domingo_o:26 domingos:-29 domingos_$:-36 doors:37 dos:-58 dos_$:-28 dos_horas:-38 driving:-30
drop:91 drop_it:43 earlier:82 earlier_the:60 early:96 easter:-48 easter_$:-49 el:214 el__despues:27 el__en:43
el__hoy:-33 el__pero:33 el__puedo:43 el__que:57 el__sea:42 el__si:46 el__temprano:26 el_carro:-48 el_de:-36 el_dia:28
el_finde:26 el_jueves:62 el_lunes:105 el_martes:82 el_miercoles:77 el_mismo:-51 el_pedal:-26 el_precio:-31 el_que:28
el_sabado:155 eleven:28 en:-31 en__del:-37 en__dias:-48 en__escuela:34 en__manana:-52 en__se:98 en__tarde:68
en_cuanto:80 en_la:46 en_marzo:-44 en_unos:-48 en_vez:-30 end:51 end_$:-26 end__the:54 end_of:66 ends:31 engine:26
entre:69 era:-33 es:-172 es_$:-26 es__horario:-57 es_de:-43 es_mi:45 es_su:-58 esa_hora:36 esas:90 esas_no:54
escuela:37 ese:39 ese__no:30 ese_dia:55 eso_de:25 esos:57 espacio:79 espacio_$:46 esta:-80 esta_el:-25 estan:-93
estan__el:-83 este_mes:-55 evening:45 every:-64 every_morning:-36 except:26 favor_$:-56 few:-25 filled:-39
filled_it:-34 fin:39 fin__mes:42 fin_de:39 finde:27 finde_$:31 fine_$:-30 first:71 first__of:33 first_week:33 fit:52
fit__in:38 fit_me:28 for:122 for__inspection:30 for__is:-31 for__oil:56 for_a:29 for_an:75 for_me:82 for_that:-28
for_thursday:-28 for_you:28 free:87 fresh:-41 fri:79 friday:101 friday_$:101 friday_afternoon:-63 friday_at:33
friday_but:59 friday_instead:44 friday_is:-46 friday_one:-36 fridays:30 from:87 from_the:31 fue:-28 get:28 get_in:26
get_my:34 give:-115 give__a:-108 give_me:-111 go:-27 go__friday:-45 go_with:-39 going:28 good:33 good_$:-26 got:269
got_$:117 got_a:79 got_anything:93 got_it:-35 great:-53 guy:-58 guys:-53 guys_open:-39 habra:41 hacer:-32 half:43
has:60 hasta:-79 hasta__hora:-40 hasta_que:-59 have:90 have_an:44 have_me:26 hay:78 hay_$:43 hold:-28 hole:38 hora:36
hora_$:25 hora_que:80 horario:-110 horas:-43 hour:83 hours:-35 hours_$:-28 how__are:-25 how__hours:30 how__is:-35
how__of:-29 how_about:82 how_urgent:-25 hoy:76 hoy_$:-44 hoy__de:26 hoy__la:44 hoy_en:45 hoy_mismo:72 huh:-25
huh_$:-25 humo:-60 humo_$:-64 hundred:-64 hundred_$:-35 i:-89 i__a:-44 i__at:-72 i__by:43 i__in:60 i__my:-33
i__out:33 i__to:-67 i__today:-37 i__you:-41 i_be:-42 i_bring:27 i_come:33 i_get:-28 i_stop:39 i_switch:-46 i_work:39
i_would:-25 id:77 idea:-36 idk:-42 if:77 if__can:27 if__is:52 if_i:-55 if_that:31 if_you:52 igual:34 ill:43 ill_be:60
ill_stop:27 ill_wait:29 im:119 im_retired:58 in:88 in_$:50 in__afternoon:31 in__day:-32 in__the:51 in_friday:54
in_the:-47 in_tomorrow:25 in_two:33 in_your:47 inspection:25 instead:78 instead_$:104 is:76 is_$:-75 is__at:34
is__but:27 is__for:29 is__ok:25 is__on:32 is__the:-65 is_better:-65 is_fine:32 is_in:-28 is_my:26 is_not:34 is_ok:45
is_on:-26 is_shaking:27 is_that:-30 is_the:-100 is_there:44 is_this:-36 is_thursday:30 ish:56 it:-58 it_$:-55
it__at:-48 it__friday:41 it__in:-37 it__on:-35 it_and:43 it_back:25 it_be:69 it_friday:32 it_in:26 it_myself:-31
it_shakes:-66 it_to:-50 jueves:85 jueves_$:-85 jueves__a:69 jueves__la:49 jueves__las:-38 jueves_a:-29 jueves_en:26
jueves_pero:59 just:-38 just__i:-36 kids:63 la:43 la_$:-39 la__de:40 la__el:61 la__las:-42 la__no:34 la__pasar:-28
la__que:86 la__semana:43 la_cita:-56 la_de:-68 la_del:-55 la_escuela:26 la_hora:87 la_manana:-55 la_proxima:37
la_semana:61 la_tarde:76 labor:-44 labor_day:-47 las:95 las_$:-79 las__y:28 las_dos:-49 las_no:38 las_y:47
late__you:-27 late_are:-25 later:89 le:-148 le_digo:-79 le_sale:-66 let:-42 let_me:-33 lets:-25 libre:60 libre_$:31
light:33 like:105 like_$:61 list:-29 llego:33 llego_$:37 llegue:-39 lo:-126 lo__a:-26 lo__en:-112 lo__pronto:123
lo__que:-30 lo_dejo:-38 lo_di:-30 lo_llevo:-70 lo_mas:153 lo_tengo:-35 lol:27 long_$:41 look:-26 los:45 los__en:44
luego:-35 lugar:38 lugar_$:54 lunes:174 lunes__las:26 lunes_a:45 make_it:66 manana:87 manana_$:-44 manana__las:40
manana_a:46 manana_temprano:27 manana_y:-26 many_hours:30 martes:126 martes_$:75 martes__la:30 martes__le:-66
martes_a:26 martes_pero:-56 marzo:-73 marzo_$:-30 mas:179 mas__el:30 mas__posible:59 mas__que:57 mas_pronto:135
mas_temprano:-37 matter:25 maybe:93 maybe_next:72 me:-60 me_$:108 me__a:28 me__call:-26 me__el:67 me__igual:42
me__im:-26 me__on:-28 me__ring:-64 me__the:-31 me__week:-134 me__you:30 me_a:-111 me_after:-74 me_again:-37
me_before:32 me_da:40 me_in:-30 me_next:-131 me_quedan:47 me_then:-37 me_to:-26 medio:42 medio_dia:31 mejor__lunes:43
mejor_el:65 menos:117 menos__lunes:42 menos_el:67 message:-27 mi_cita:-44 mi_turno:26 miercoles:128 miercoles_$:26
min:-30 mind:-33 mine:-30 mis:-50 mismo:59 mon:83 mon__tues:29 mon_or:28 monday:139 monday_$:-44 monday__be:42
monday_at:50 monday_morning:-35 monday_so:-26 more:-33 morning:-89 morning_$:-106 morning_one:-31 mornings:79
move:-60 move__to:-30 moving:-35 much:-40 much__my:-29 much_of:-29 my:47 my__ends:25 my__in:28 my_morning:-28
my_number:27 my_thursday:-27 my_tuesday:-25 myself:-38 n:45 navidad:-29 nd:66 necesito:53 necesito_que:31 need:66
need__appointment:27 need_an:27 needed:-35 neither:55 never:-63 new:-107 new_tires:-38 next:244 next_$:33
next_week:42 ni__ni:28 night:-82 night_$:-58 night_and:-30 nine:47 ninguna:32 no:40 no_$:-106 no__do:45 no__hoy:25
no__lunes:27 no__para:68 no__yet:-36 no_but:-46 no_can:45 no_el:81 no_good:35 no_hay:54 no_idea:-35 no_lo:-35
no_quiero:-28 no_se:-65 no_sea:55 no_tiene:60 no_trabajo:41 no_voy:-45 noche:-29 nomas:31 none:67 none__those:43
none_of:39 noon:39 not__yet:-33 not_now:-35 not_sure:-36 nudge:-25 o:-43 ocho:35 oclock_$:-31 of:64 of__month:41
of__morning:-29 of_april:33 of_my:-30 of_the:47 of_them:25 of_those:72 off:27 off__list:-31 off_the:-29 oil_change:36
ok:39 on:28 on__it:25 on_friday:56 on_it:36 on_me:33 on_monday:-31 on_saturday:-36 on_saturdays:-52 on_sunday:-35
on_sundays:-25 on_the:31 on_thursday:42 one:-99 one_$:-132 one__the:32 one_of:26 one_please:-30 only:66 open:-64
open_$:101 open_tomorrow:-26 opening:86 or:-29 or_$:-77 out:-86 over_$:29 para:102 para__de:29 para__sabado:39
para_cuando:55 para_la:53 para_que:-28 pasado_manana:25 paso:34 past:32 pedal:-40 pero:112 pero__las:71 pero_a:81
pero_le:-68 pick:72 place:-43 pm:81 podria:77 podria_ser:58 poquito:31 por:-38 por__la:31 por__manana:30
por__tarde:47 por_la:88 por_las:-27 por_que:-28 porque:54 posible:156 posible_$:157 possible:86 possible_$:93
precio:-28 precio_$:-26 prefiero:-25 primera:49 pronto:130 pronto_posible:58 pronto_que:35 proxima:37
proxima_semana:37 pueda:96 pueda_$:92 puedan:96 puede:31 puede_$:67 puedo:121 puedo__el:38 puedo_el:39 que:48
que__el:27 que__la:-31 que__me:31 que__menos:25 que__sea:33 que_hora:-60 que_horario:-25 que_me:40 que_no:50
que_se:29 que_sea:55 que_sigue:-27 que_tal:32 que_tan:-34 que_tengan:42 quedan:36 quiero__el:32 quiero_ir:26
quisiera:38 rd:51 rd_$:59 really:28 remind:-73 remind__in:-46 remind_me:-73 retired:71 retired_$:40 right:65
right__the:29 right__you:25 ring:-36 road:26 room:34 rotation:29 run:64 sabado:182 sabado__las:57 sabado_a:58
said:-28 sale:-56 sale_humo:-68 salga:-38 salgo:29 saliendo:77 saliendo_de:29 saliendo_del:31 same:-47 same_day:-27
same_time:-30 sat:153 sat_morning:27 saturday:117 saturday_$:43 saturday_at:29 saturday_hours:-77 saturday_morning:27
saturdays:-46 saturdays_$:-53 schedule:-34 school:59 se:47 se_lo:-51 se_pueda:115 se_puede:61 se_va:-32 sea:125
sea_$:33 see_you:-33 semana:132 semana_$:46 send:-25 ser:29 set:-41 shakes:-67 shaking:28 shift__at:25 shop:-39
shop_$:-35 si:84 si__dejo:-41 si__jueves:-33 si__llevo:-44 si__martes:-58 si_el:-34 si_lo:-86 si_me:43 siempre:-26
siempre_no:-26 sigue:-34 siguiente:31 so:142 sold:26 sometime:43 soon:34 soon__you:56 soon_as:53 sooner:60
sooner__better:59 sooner_the:59 soonest:90 sounds:-26 soy:48 squeeze:42 squeeze__in:41 squeeze_me:41 st:36 start:31
stop:-27 stop_$:-52 stop__me:-34 stop_by:38 stop_in:36 stop_texting:-29 su:-44 su_horario:-57 suits:27 sunday:-46
sunday_$:-137 sunday_or:30 swamped:-27 switch:-79 switch_to:-47 take:38 take_me:28 take_the:-32 tal:28 tan:-36
tarde_$:-29 te:-41 te_digo:-28 tempranito:32 temprano_$:-26 ten:80 ten_$:35 tendra:45 tendran:30 tengan:166
tengo_que:-31 text:-49 texting:-30 th:187 th_$:-45 th_is:35 that:39 that__be:-25 that_day:109 that_off:-26 the:156
the__after:56 the__for:-40 the__guy:-35 the__is:41 the__on:-36 the__one:-74 the__or:45 the__text:-43 the__the:115
the__to:28 the_am:-47 the_better:127 the_car:-25 the_doors:31 the_earlier:61 the_friday:-109 the_kids:34 the_list:-25
the_month:45 the_morning:-29 the_nd:64 the_next:48 the_rd:31 the_school:33 the_sooner:43 the_th:205 the_thursday:-25
the_week:26 the_wrong:-51 then:82 then_$:41 there_on:-48 thing:-94 thing_$:-70 third:-42 this__the:-47 this_is:-53
this_month:-36 this_week:34 this_weekend:45 those:128 though:34 thousand__hundred:-25 thurs:89 thurs_$:-28
thursday_$:-48 thursday__it:-31 thursday_but:66 thursday_what:26 thursday_works:-49 tiene:41 tiene__el:70 tienen:42
tienen_$:71 tienen__de:-26 til:-26 till:-35 time_$:-37 tipo:44 tipo_$:30 tires:-32 tmrw:38 to__in:30 to__it:28
to__my:31 to_be:50 to_friday:-28 to_get:66 to_monday:-59 to_need:25 to_next:-27 to_take:25 todavia:-32 todavia_no:-25
today_$:-54 todo:-32 todo__dia:-33 todo_el:-26 told:-26 tomorrow:94 tomorrow_$:-42 tomorrow_at:32 too:-36
trabajan:-100 trabajo:93 trabajo_$:56 trip:31 truck:31 try:-186 try__in:-39 try_me:-180 tu:-52 tues:87 tuesday:94
turno:38 two_$:-38 two_hundred:-35 two_weeks:39 un:85 un__el:26 una_cita:51 una_hora:-43 unas:-26 unas_semanas:-28
unos:-49 up:-42 urgent:-29 use:-27 usted:27 va_a:-39 van:-31 ver:30 vez:-45 viernes:87 viernes_$:-65 viernes__de:33
viernes__favor:-26 viernes__la:33 viernes__las:-73 viernes_a:-44 viernes_pero:27 voy:-65 voy_a:-47 was:-35 we:-44
we__instead:77 we__it:-58 we_do:33 wed:185 wed_$:35 wed_at:47 wednesday:49 weds:35 week:130 week_$:67 week__april:30
week_after:31 weekend:78 weekend_$:47 weekends:-37 weeks:-67 weeks_$:-52 went:-33 were:-35 what__the:37
what__your:-40 what_about:136 what_are:-69 what_i:-41 what_time:-26 whatever:68 when_you:30 whenever:143
whenever_you:90 whichever:77 who:-28 whole:-26 wifi:-27 will_it:50 with_me:-31 with_the:35 wk:30 work:28 work_$:42
work__me:-32 works:28 works_$:-52 works_but:-50 would__be:-46 would__better:55 would_be:49 would_i:-42 write:-29
wrong:-57 y:109 y_$:30 y_en:36 ya:-96 ya_casi:34 ya_no:-88 year:-27 yes_$:-43 yes__works:-58 yet:-119 yet_$:-25
yet__me:-69 yo:81 you:108 you__a:-36 you__an:57 you__anything:31 you__im:36 you__it:-54 you__my:-41 you__on:-65
you__what:-34 you_can:101 you_close:34 you_do:141 you_got:116 you_guys:-50 you_have:52 you_in:-28 you_pick:35
you_see:28 you_there:-51 you_work:-28 your__hours:-63 youre:26
"""
