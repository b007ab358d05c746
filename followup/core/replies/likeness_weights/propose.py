"""What speaks for and against `propose`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "propose"
BIAS = -171
WEIGHTS = """\
#abad:148 #able:62 #abor:-29 #abou:101 #abra:36 #abre:-89 #abri:26 #acac:19 #acei:18 #acio:105 #acom:22 #acro:21
#adit:23 #ados:-68 #adra:28 #afte:84 #agai:-29 #ahor:-38 #aila:71 #ajaj:-19 #ajan:-55 #akes:-33 #akin:38 #algo:105
#alie:47 #ally:25 #alqu:128 #also:54 #ambi:-61 #amel:-26 #ampe:-23 #anan:68 #ance:-53 #anda:-58 #ando:28 #anit:21
#anme:-33 #anso:25 #anta:-18 #ante:44 #anto:19 #anyt:151 #appe:-18 #apri:41 #apun:-22 #arda:-27 #arde:35 #ario:-84
#arli:72 #arly:56 #aron:-41 #arou:52 #arri:18 #arro:-21 #arte:90 #asap:370 #asta:-66 #aste:-40 #ater:49 #athe:-20
#atur:74 #ause:-23 #avad:21 #avai:98 #avia:-22 #aybe:72 #ayda:-18 #baby:-30 #bado:147 #baja:-92 #bajo:56 #beca:-18
#been:-32 #befo:64 #bett:51 #betw:20 #biar:-30 #blem:-29 #blue:-27 #bout:149 #brak:29 #bren:-89 #caci:28 #call:-68
#camb:-64 #came:-30 #canc:-57 #cans:22 #carr:-24 #caus:-23 #ceit:18 #cept:19 #cerr:-59 #cesi:41 #chec:-21 #ched:-40
#chev:39 #choo:23 #chri:-27 #cial:-22 #cier:20 #cion:32 #cita:24 #clas:22 #clos:33 #cobr:-27 #cole:76 #come:-27
#como:49 #comp:-24 #conf:-32 #coul:95 #crac:18 #crib:-41 #cros:21 #cuad:28 #cual:59 #cuan:40 #davi:-21 #days:-20
#deal:24 #dela:-21 #depe:-61 #desc:19 #desp:23 #dias:20 #diga:23 #digo:-71 #ding:28 #dito:20 #dnes:62 #does:-45
#domi:-30 #door:37 #dred:-27 #dria:41 #drop:74 #dule:-39 #eady:-21 #eall:30 #earl:128 #east:-35 #ecau:-18 #eces:30
#ecia:-24 #ecio:-30 #ecit:18 #edal:-24 #edan:101 #eded:-28 #edes:28 #edio:37 #edne:69 #edul:-39 #eede:-28 #eeks:-30
#eeze:36 #efor:64 #egar:-31 #egue:-26 #egun:-22 #eigh:-20 #eite:18 #eith:33 #ejor:42 #eman:96 #emin:-33 #emos:-36
#empr:24 #ence:-20 #ende:-45 #endo:35 #endr:106 #ends:-23 #enev:100 #enga:113 #engi:20 #enin:113 #enme:-44 #enos:78
#ensa:-35 #entr:61 #eone:23 #epen:-61 #eran:22 #erar:-18 #erco:90 #eren:-19 #erne:61 #erra:-58 #erre:26 #esas:74
#esca:21 #escr:-36 #esda:123 #esit:40 #esnt:-21 #esos:63 #espa:54 #espe:-40 #espu:22 #essa:-19 #esta:-108 #este:27
#esto:31 #etir:70 #ette:58 #etti:20 #etwe:20 #even:51 #ever:64 #eves:57 #exce:21 #ffic:26 #fice:27 #find:28 #firm:-26
#firs:36 #fore:62 #forg:-23 #free:18 #fren:-18 #frid:102 #from:67 #fter:76 #gain:-29 #gamo:21 #ganm:-18 #gent:-38
#gett:20 #gine:20 #give:-61 #givi:18 #goin:38 #good:34 #gran:22 #grea:-35 #grin:30 #gual:24 #guen:-27 #guie:37
#guna:36 #gunt:-19 #guys:-61 #habl:-31 #habr:36 #hake:-49 #haki:33 #half:27 #hank:-19 #hast:-57 #have:85 #heck:-29
#hedu:-39 #hene:100 #here:22 #heve:39 #hich:39 #hijo:-20 #hing:45 #hird:-30 #hole:18 #home:25 #hool:32 #hora:-40
#hori:-28 #hose:84 #houl:-23 #hour:-29 #hris:-27 #humo:-47 #hump:47 #hund:-19 #hurs:76 #iado:-22 #iaje:-19 #ible:174
#ibre:46 #iche:40 #iday:96 #iend:52 #iene:88 #ient:23 #iera:58 #ierc:93 #iern:60 #iero:-31 #ierr:35 #igan:19 #ight:33
#igua:24 #igue:-36 #igui:28 #ilab:72 #imer:19 #inan:-23 #inde:26 #indi:25 #ingo:-30 #ings:95 #ingu:29 #inst:59
#ione:22 #iper:23 #irad:27 #ired:42 #irmo:-45 #irst:36 #isie:21 #isit:-18 #ismo:40 #istm:-27 #itch:-57 #ithe:33
#itte:-19 #jeje:-32 #juev:58 #just:-18 #kids:48 #king:53 #know:-19 #ksgi:19 #labl:69 #labo:-29 #lado:25 #late:38
#left:19 #lega:-27 #lego:28 #legu:-20 #leme:-32 #lets:-24 #leva:22 #libr:47 #lien:40 #lier:72 #like:95 #lled:-24
#lleg:-20 #llev:26 #lose:24 #lqui:128 #ltim:19 #lueg:-21 #luga:31 #lune:123 #make:22 #mana:166 #mand:-51 #many:22
#mart:94 #mayb:72 #mbia:-50 #mean:-24 #medi:53 #mejo:38 #mela:-35 #meno:84 #mens:-29 #meon:23 #mera:24 #mess:-19
#mier:93 #mina:-24 #mind:-54 #ming:-29 #mism:48 #moda:22 #mond:93 #more:-28 #morn:22 #morr:68 #move:-58 #mpra:32
#muev:-20 #myse:-23 #nana:63 #ncel:-55 #ndan:-22 #nday:55 #nder:-22 #ndin:21 #ndra:92 #ndre:-27 #nece:39 #need:27
#neit:29 #nero:-32 #nesd:69 #nest:79 #neve:51 #next:176 #nfir:-28 #ngan:109 #ngin:19 #ngun:29 #nico:31 #nine:37
#ning:143 #nito:19 #nksg:19 #noma:20 #none:68 #noon:31 #nsaj:-29 #nste:51 #ntem:-29 #ntes:56 #nton:20 #ntra:27
#ntre:33 #nuev:-18 #nyth:100 #nyti:18 #odav:-21 #odri:28 #oesn:-21 #offi:27 #oing:24 #oles:69 #omas:26 #omeo:23
#omes:-33 #omin:-26 #omod:29 #omor:87 #onda:93 #oner:57 #ones:80 #onfi:-29 #only:47 #onta:27 #onth:18 #onto:56
#oone:133 #oors:38 #open:55 #opin:23 #oqui:35 #orar:-77 #orit:-22 #orni:21 #orqu:38 #orro:71 #osib:118 #ossi:72
#otat:32 #ould:85 #ound:19 #oupo:-18 #ours:-57 #over:-18 #ovin:-18 #oxim:31 #paci:59 #pack:-19 #para:118 #part:-20
#pasa:-21 #pase:-32 #payd:-18 #peci:-19 #pect:20 #peda:-25 #pend:-70 #peni:79 #pera:-25 #pero:107 #pick:50 #ping:23
#pode:-20 #podr:24 #pons:-22 #poqu:31 #porq:38 #posi:116 #poss:73 #pped:-20 #pran:38 #prec:-31 #preg:-19 #pres:21
#pril:42 #pron:102 #prox:30 #pued:242 #quee:40 #quen:-19 #quie:102 #quin:22 #quis:27 #quit:56 #rado:-30 #rake:30
#rand:23 #rani:21 #rari:-77 #rcol:92 #rday:70 #read:-31 #real:38 #reat:-39 #reci:-33 #reet:25 #regu:-29 #remi:-33
#reno:-25 #rest:20 #reti:70 #rgen:-38 #rida:101 #righ:42 #rime:19 #rind:30 #ring:-24 #rist:-25 #rlie:72 #rmin:-20
#rnes:62 #rnin:18 #rong:-37 #ront:106 #ross:21 #rota:39 #roun:48 #roxi:31 #rque:40 #rrad:-58 #rren:18 #rrow:68
#rtes:97 #ruck:24 #saba:148 #said:-26 #saje:-29 #sala:-26 #sale:-49 #sali:48 #same:-30 #sand:-25 #satu:73 #scan:29
#sche:-39 #scho:32 #scri:-41 #sday:117 #self:-24 #sema:100 #send:-18 #sgiv:19 #shop:-42 #shou:-32 #sibl:191 #side:-20
#sier:19 #sito:42 #slot:-28 #smok:18 #sold:31 #some:39 #soon:139 #soun:-27 #spac:55 #sper:-30 #spue:22 #sque:49
#squi:21 #ssag:-18 #ssib:73 #stan:-55 #stea:50 #sted:45 #ster:-40 #stma:-27 #stoy:25 #stre:24 #suit:18 #sund:-38
#swap:-24 #swit:-53 #take:-18 #tead:51 #tede:39 #teme:-29 #temp:37 #tend:101 #teng:128 #term:-21 #test:31 #text:-75
#than:-35 #that:18 #then:58 #ther:41 #thin:44 #thos:85 #thur:74 #tien:86 #till:-59 #time:78 #ting:-21 #tipo:21
#tira:28 #tire:34 #tmas:-27 #todo:-31 #tomo:72 #trae:31 #trai:-21 #tree:21 #treg:-18 #truc:23 #tter:26 #tues:116
#turd:73 #twee:20 #uadr:28 #ualq:128 #uand:40 #ueak:18 #ueda:145 #uedo:83 #ueez:40 #uego:-37 #uesd:54 #ueve:51
#uevo:-19 #ugar:31 #uien:20 #uier:121 #uisi:21 #uito:56 #ulti:19 #unda:-41 #undr:-27 #unds:-26 #unes:123 #unic:22
#unos:-38 #unte:-41 #upon:-19 #urda:73 #urge:-18 #urno:19 #uste:57 #vail:98 #varl:18 #veni:38 #vera:-20 #vers:-24
#very:-41 #vier:38 #ving:-22 #visi:-19 #wapp:-20 #wedn:69 #weds:23 #week:103 #ween:20 #went:-21 #were:-18 #when:79
#whic:40 #whol:-18 #wifi:-29 #will:29 #wipe:22 #witc:-53 #with:-36 #work:42 #wron:-37 #xcep:21 #yeah:19 #your:30
#ysel:-23 #ythi:94 %again_later:31 %again_later%agree:40 %again_later%bring:77 %again_later%busy:-49
%again_later%call_off:21 %again_later%car:-33 %again_later%car_part:-46 %again_later%doubt:-87
%again_later%elsewhere:-27 %again_later%lift:-18 %again_later%money:-34 %again_later%odometer:-44
%again_later%on_way:61 %again_later%opening:62 %again_later%pay_day:-93 %again_later%phone:-41 %again_later%place:-28
%again_later%refuse:33 %again_later%season:-105 %again_later%staff:22 %again_later%start_again:-19
%again_later%wrong_one:28 %agree%bad:18 %agree%busy:-18 %agree%call_off:54 %agree%car_part:35 %agree%doubt:49
%agree%elsewhere:24 %agree%family:69 %agree%gone_car:45 %agree%how_long:101 %agree%leave_me:21 %agree%machine:27
%agree%meaning:34 %agree%money:-32 %agree%noise:-22 %agree%odometer:61 %agree%on_way:59 %agree%opening:20
%agree%pay_day:24 %agree%phone:36 %agree%question:19 %agree%season:44 %agree%shift_it:56 %agree%smoke_smell:-33
%agree%start_again:-31 %agree%wrong_one:72 %away:-43 %away%busy:-18 %away%call_off:-37 %away%car:-28
%away%gone_car:31 %away%how_long:39 %away%leave_me:28 %away%lift:63 %away%on_way:18 %away%opening:24
%away%question:24 %away%refuse:-28 %away%shift_it:-27 %bad%machine:30 %bad%meaning:27 %bad%shake:31 %bring:101
%bring%car_part:34 %bring%elsewhere:-24 %bring%fails:29 %bring%how_long:19 %bring%leave_me:26 %bring%odometer:-25
%bring%on_way:-38 %bring%phone:23 %bring%question:77 %bring%refuse:-40 %bring%season:-21 %bring%shift_it:-78
%bring%staff:33 %bring%wrong_one:-37 %busy:34 %busy%call_off:27 %busy%leave_me:49 %busy%opening:-27 %busy%place:-21
%busy%refuse:41 %busy%season:-29 %call_off%doubt:21 %call_off%elsewhere:21 %call_off%family:37 %call_off%gone_car:-22
%call_off%how_long:46 %call_off%lift:20 %call_off%meaning:19 %call_off%message:-18 %call_off%odometer:30
%call_off%on_way:49 %call_off%opening:23 %call_off%pay_day:-26 %call_off%place:18 %call_off%question:32
%call_off%refuse:103 %call_off%season:-75 %call_off%shift_it:45 %call_off%thanks:-26 %call_off%who:-20
%call_off%wrong_one:37 %car%car_part:25 %car%gone_car:-31 %car%lift:55 %car%noise:21 %car_part:58 %car_part%do_it:33
%car_part%family:-18 %car_part%noise:53 %car_part%opening:18 %car_part%place:35 %car_part%question:-18
%car_part%wrong_one:-24 %do_it:-66 %do_it%doubt:22 %do_it%how_long:-46 %do_it%on_way:29 %do_it%opening:26
%do_it%pay_day:-22 %do_it%season:-34 %do_it%staff:-24 %do_it%wrong_one:25 %doubt:-35 %doubt%elsewhere:-23
%doubt%how_long:-24 %doubt%season:-36 %doubt%shift_it:-68 %elsewhere:-26 %elsewhere%place:20 %elsewhere%refuse:33
%elsewhere%wrong_one:-31 %fails:32 %fails%phone:20 %fails%refuse:-20 %fails%shift_it:-27 %family%leave_me:24
%family%odometer:-28 %family%question:-25 %gone_car%phone:23 %gone_car%season:-28 %how_long:90 %how_long%leave_me:24
%how_long%odometer:-20 %how_long%on_way:37 %how_long%opening:-77 %how_long%pay_day:-32 %how_long%question:-86
%how_long%refuse:24 %how_long%shift_it:31 %how_long%staff:-21 %leave_me:44 %leave_me%message:-28 %leave_me%pay_day:37
%leave_me%refuse:-30 %leave_me%season:33 %leave_me%shift_it:23 %leave_me%smoke_smell:27 %leave_me%start_again:-18
%lift:29 %lift%on_way:39 %lift%opening:19 %lift%question:-21 %lift%refuse:45 %machine:18 %machine%meaning:27
%machine%shake:31 %machine%wrong_one:21 %meaning:-19 %meaning%question:-68 %meaning%shake:31 %message:-139
%message%on_way:-25 %message%refuse:-23 %money:-72 %money%question:61 %money%refuse:-30 %money%smoke_smell:-39
%money%wrong_one:-29 %noise:27 %noise%refuse:-22 %odometer:39 %odometer%refuse:23 %odometer%staff:18 %on_way%place:33
%on_way%question:48 %on_way%refuse:38 %on_way%shift_it:53 %on_way%thanks:26 %on_way%wrong_one:-24 %opening:-200
%opening%place:-68 %opening%question:-87 %opening%refuse:25 %opening%staff:-47 %opening%wrong_one:33 %pay_day:-77
%pay_day%question:-24 %pay_day%refuse:-20 %pay_day%shift_it:-34 %phone:-135 %phone%refuse:65 %phone%shift_it:-31
%phone%staff:-33 %place%question:33 %place%refuse:27 %question%refuse:49 %question%season:-32 %question%who:-53
%refuse%season:-70 %refuse%shift_it:29 %refuse%thanks:-19 %refuse%wrong_one:29 %season:-62 %season%shift_it:-76
%season%thanks:-20 %season%wrong_one:-41 %shift_it:97 %shift_it%wrong_one:-38 %smoke_smell:-45 %staff:-94
%staff%start_again:20 %staff%wrong_one:-20 %start_again:-23 %thanks:-61 %who:-82 @?:109 @after_visit:-138 @car:-48
@confirm:-1135 @confirm_stop:-45 @day:195 @day_:27 @later:-146 @nothing:-297 @odometer:-136 @offers:-313
@offers_:-124 @offers_the_th:-79 @reading:38 @time:280 @time_:18 @times:385 @walk_in:61 ^_$:-175 ^_after:-28
^_afternoon:-34 ^_all:-42 ^_am:-34 ^_anda:-19 ^_any:150 ^_are:-51 ^_as:41 ^_ask:-25 ^_been:-20 ^_blue:-26 ^_call:-64
^_cancel:-30 ^_check:-27 ^_could:41 ^_cual:-65 ^_cualquier:84 ^_cuando:73 ^_cuanto:-50 ^_day:20 ^_depende:-51
^_do:-84 ^_early:20 ^_el:-97 ^_en:23 ^_end:30 ^_entre:23 ^_es:-31 ^_ese:24 ^_estan:-64 ^_este:26 ^_estoy:-25
^_fine:-24 ^_friday:-95 ^_give:-44 ^_go:-19 ^_got:46 ^_hableme:-39 ^_half:27 ^_hasta:-29 ^_have:23 ^_how:-28 ^_hoy:35
^_i:27 ^_id:41 ^_in:58 ^_it:-41 ^_la:-110 ^_lets:-34 ^_lo:66 ^_make:48 ^_manana:19 ^_martes:21 ^_maybe:27 ^_mejor:31
^_miercoles:21 ^_monday:27 ^_morning:-25 ^_mornings:21 ^_muy:-29 ^_my:53 ^_nada:21 ^_neither:29 ^_new:-26 ^_next:120
^_ninguna:42 ^_no:37 ^_none:69 ^_noon:26 ^_ok:-33 ^_para:-43 ^_please:-23 ^_pm:-20 ^_que:-43 ^_remind:-33 ^_sat:48
^_saturday:34 ^_se:-31 ^_si:-30 ^_sold:22 ^_stop:-30 ^_sunday:42 ^_sure:23 ^_take:-18 ^_the:-134 ^_this:47 ^_those:19
^_thursday:-48 ^_today:23 ^_tomorrow:37 ^_trabajan:-46 ^_tues:62 ^_tuesday:33 ^_un:34 ^_una:40 ^_va:21 ^_wed:65
^_weds:18 ^_what:-24 ^_whenever:118 ^_which:-32 ^_whichever:30 ^_who:-23 ^_works:-22 ^_ya:-32 ^_yeah:28 ^_yes:38
^_yo:18 ^_you:-19 a:67 a__de:22 a__hora:81 a__in:35 a__me:23 a__si:23 a__weeks:-24 a__y:20 a_esa:26 a_la:53 a_las:110
a_loaner:19 a_lunch:-34 a_ring:-39 about:103 abren:-89 abren_$:-77 aceite:18 across:21 address_$:18 after:93
after_$:81 after_that:24 after_work:29 afternoon:-38 again:-28 ahi:18 ahorita:-27 al:27 al__dia:21 algo:94
all_day:-48 also:54 am:84 am_y:25 an:131 an__change:21 an_appointment:26 an_hour:23 an_oil:20 and:152 and__is:31
and__long:19 and__need:-31 and_can:25 and_how:35 and_i:-22 and_im:37 and_it:19 and_the:-18 and_we:29 anda:-31 ando:22
ano:-21 antes:51 any:280 any__after:26 any__but:50 any__next:22 any__those:21 any_chance:19 any_day:119 any_of:33
any_time:58 anything:78 anything_$:-18 april:42 apunteme:-23 are:-64 are_$:-18 are__on:20 are__there:-30 are_you:-58
are_your:-42 around:54 around_$:36 as:63 as__as:41 asap:370 ask:-138 ask_me:-117 at:40 at__it:31 at_and:38 at_if:21
at_instead:-34 at_my:18 at_noon:-32 at_or:-32 at_work:-30 available:72 baby:-29 back_by:24 bad:27 be:113 be_$:25
be_done:-24 be_the:23 because:-18 been:-32 been__to:-30 before:64 before_you:31 best_$:-19 better:51 better_$:54
between:19 between_and:20 blue:-27 blue_$:-25 bout:47 box:18 brake:18 btw:23 but:195 but__is:24 but__me:-24
but_it:-18 but_monday:59 but_my:19 but_the:32 by:37 call:-60 call_me:23 cambiar:-18 came:-29 can:225 can__be:36
can__come:21 can__do:109 can__it:44 can__me:25 can__stop:24 can_do:26 can_it:26 can_we:-22 can_you:60 cancel:-45
cancel_my:-28 cant_make:-35 car:-22 carro:-20 check:-27 check__me:-31 check_with:-32 christmas:-27 christmas_$:-23
cierren:24 cita_$:-28 cita__el:36 cita__favor:29 cita_para:40 cita_por:29 closed_$:19 come__friday:29
come__instead:-49 come_at:-43 come_in:31 come_thursday:23 comes:-33 como:19 como__las:23 como_a:36 como_en:-18
con:-43 confirmo:-45 cost:18 could:101 could__do:51 could_you:45 crack:18 cual:-69 cual__su:-47 cual_es:-50
cualquier:119 cualquier__menos:52 cualquier_dia:89 cuando:29 cuando__el:-25 cuando_lo:-36 cuanto__a:-21 cuanto_se:80
cuanto_va:-20 da:36 da_igual:31 dan:-28 day:166 day_$:-28 day_after:48 day_but:41 days:18 de:41 de__a:28 de__me:30
de__semana:27 de_esas:26 de_las:-42 de_los:20 de_manana:-33 de_mes:41 de_mi:26 de_un:-18 deal:28 del:-42
del_jueves:-52 depende:-50 descanso:25 despues:22 despues_$:-19 despues_del:22 dia:160 dia_$:22 dia__el:60
dia_menos:71 dia_no:22 dias:20 did:-19 digo:-71 digo_$:-51 do:99 do__at:-26 do__guys:-21 do__have:-28 do__work:-26
do_any:23 do_friday:36 do_instead:81 do_it:-21 do_you:-97 does:-24 does_that:-19 doesnt:-21 domingo_$:-23 done_in:-23
doors:38 dos:20 drop:64 drop__at:22 drop_it:27 drop_me:18 earlier:72 early:55 easter:-38 easter_$:-39 el:126
el__despues:22 el__el:19 el__en:31 el__ese:-20 el__pasado:-40 el__pero:22 el__por:24 el__puedo:36 el__que:36
el__si:34 el__tempranito:21 el__temprano:20 el_carro:-35 el_de:-35 el_jueves:64 el_lunes:103 el_martes:62 el_mes:-31
el_miercoles:33 el_mismo:-36 el_precio:-21 el_sabado:123 en:27 en__de:21 en__del:-26 en__manana:-25 en__tarde:48
en_cuanto:85 en_el:-49 en_la:37 en_las:-23 en_que:27 en_vez:-18 end:29 end__the:42 end_of:47 ends:18 enero:-18
engine:20 entrante:18 entrante_$:18 entre:51 entre_semana:24 era:-26 es:-114 es_$:-27 es__horario:-47 es__que:-24
es_de:-19 es_mi:43 es_su:-47 esa_hora:21 esas:75 esas_horas:19 ese:20 ese_$:-19 ese__no:28 ese_dia:51 eso:25
eso_$:-21 eso_de:23 esos:63 espacio:55 espacio_$:40 esperar:-20 esperar_$:-21 esta:-56 estan:-62 estan_$:18 este:26
este_mes:-21 estoy:25 evening:23 every:-33 except:21 favor_$:-26 fin:55 fin_de:33 fine_$:-32 first:36 first_thing:26
fit:37 for:86 for__oil:29 for_an:55 for_me:79 for_that:-21 free:28 fri:41 friday:66 friday_$:73 friday_afternoon:-60
friday_and:-22 friday_at:22 friday_but:47 friday_instead:30 friday_is:-40 friday_morning:28 fridays:36 from:67 get:20
getting:20 give:-61 give__a:-62 give_me:-61 go:-29 go__friday:-38 go_with:-35 going:38 going_to:36 good:34 good_$:-22
got:190 got_$:73 got_a:62 got_anything:48 got_the:-18 great:-34 grinding:26 guy:-43 guys:-52 hableme:-28 habra:36
half:27 has:61 hasta:-57 hasta__hora:-24 hasta_que:-37 have:54 have_a:38 have_an:37 hay:49 hijo:-22 home:25 hora:51
hora_que:73 horario:-74 hour:36 hours:-65 hours_$:-41 how:49 how__are:-24 how__hours:23 how_about:58 how_bout:48
how_is:18 how_late:-24 how_many:27 hoy:30 hoy_$:-30 hoy__la:22 hoy_en:23 hoy_mismo:42 humo:-47 hundred:-27
hundred_$:-19 i:-51 i__a:-25 i__at:-62 i__be:19 i__by:29 i__in:45 i__to:-43 i__you:-32 i_can:30 i_cant:28 i_stop:24
i_work:19 i_would:-23 id:57 idea:-29 idk:-31 if:50 if__is:22 if_i:-24 if_that:18 if_you:30 igual:26 ill:59
ill__there:25 ill_stop:26 ill_take:-20 ill_wait:39 im:83 im__the:31 im_not:-21 im_retired:43 in:86 in_$:42
in__day:-20 in__drop:19 in__morning:-22 in__the:18 in__weeks:21 in_friday:46 in_the:-50 in_tomorrow:20 in_two:31
in_your:31 instead:51 instead_$:61 is:66 is_$:-50 is__a:-19 is__address:20 is__an:-23 is__at:46 is__but:28
is__only:19 is__open:27 is__really:20 is__the:-40 is_better:-61 is_fine:34 is_friday:20 is_in:-25 is_it:-18 is_ok:35
is_on:-21 is_shaking:29 is_the:-50 is_there:48 is_this:-32 is_your:22 ish:29 ish_$:19 it:-39 it_$:-59 it__all:-18
it__and:36 it__at:-28 it__by:25 it__done:-20 it__friday:37 it__in:-31 it__next:-18 it__ok:22 it__on:-24 it__you:19
it_and:36 it_back:22 it_be:47 it_cost:24 it_done:18 it_friday:22 it_in:33 it_to:-41 jaja:23 jaja_$:19 jajaja:-19
job:23 jueves:58 jueves_$:-71 jueves__a:55 jueves__la:39 jueves__las:-19 jueves_a:-19 jueves_en:21 jueves_o:18
jueves_pero:58 just:-24 kids:48 la:84 la_$:-33 la__antes:24 la__de:32 la__el:34 la__en:-18 la__las:-32 la__no:19
la__que:82 la__semana:19 la_cita:-33 la_de:-51 la_del:-29 la_hora:80 la_semana:45 la_tarde:67 labor:-29 labor_day:-27
las:56 las_$:-52 las__me:19 las__y:32 las_llantas:18 las_mil:-20 las_y:21 late:-22 late__you:-24 late_are:-21
later:53 le:-103 le__un:23 le_digo:-51 le_sale:-52 left:19 les:-23 let:-34 let_me:-21 lets:-24 libre:46 libre_$:32
like:97 like_$:73 llego:28 llego_$:23 llegue:-20 lo:-102 lo__a:-30 lo__el:-25 lo__en:-58 lo__para:23 lo__pronto:64
lo_dan:-18 lo_dejo:-35 lo_llevo:-32 lo_mas:81 lol:22 long_$:28 luego:-21 lugar:31 lugar_$:43 lunch:-30 lunes:113
lunes_$:19 lunes_a:26 make_it:42 manana:79 manana__la:29 manana__las:42 manana_a:39 manana_temprano:19 many:22
many__is:20 many_hours:23 martes:94 martes_$:43 martes__la:26 martes__las:24 martes_a:24 martes_en:20 martes_pero:-45
mas:108 mas__como:20 mas__que:22 mas_pronto:64 mas_temprano:-21 maybe:72 maybe_next:53 me:-81 me_$:59 me__dan:-18
me__el:55 me__igual:31 me__im:-20 me__la:20 me__ring:-40 me__the:-24 me__week:-109 me_a:-64 me_after:-58 me_again:-21
me_da:40 me_in:-32 me_next:-94 me_to:-21 me_urge:18 media_$:18 medio:36 medio_dia:38 mejor:39 mejor__lunes:26
mejor_el:44 menos:84 menos__lunes:41 menos_el:48 mes_$:20 mes_pasado:-29 mi:36 mi_cita:-24 mi_hijo:-22 mi_turno:20
miercoles:76 miercoles_por:23 mil:-24 mil_$:-20 min:-20 mind:-21 mis:-23 mismo:40 mon:28 monday:102 monday_$:-48
monday__be:42 monday__th:21 monday_at:32 monday_but:23 monday_morning:-33 monday_the:21 month:19 more:-19 morning:-54
morning_$:-48 morning_and:23 mornings:63 move:-45 move__to:-24 moving:-18 much:-21 muy:-22 my:46 my__changed:22
my__on:21 my_calendar:20 my_number:26 my_shift:22 myself:-23 nada_$:-19 nd:47 necesito:42 necesito_que:19 need:50
need__appointment:20 need__back:27 need_to:-22 needed:-28 neither:29 never:-49 new:-91 new__on:-23 new_tires:-31
next:176 next_week:26 ni__ni:19 night_$:-27 nine:38 ningun:-23 ninguna:36 no:35 no_$:-99 no__do:31 no__el:-19
no__hoy:25 no__para:90 no_but:-40 no_can:31 no_el:81 no_good:30 no_hay:30 no_idea:-27 no_puedo:-20 no_quiere:-18
no_quiero:-18 no_se:-41 no_tiene:87 no_trabajo:18 no_voy:-38 nomas:20 none:68 none__those:33 none_of:32 noon:39
noon_$:19 not:-42 not__the:-18 not_before:22 not_now:-22 nuevo_$:-18 oclock_$:-26 of:68 of__month:37 of_the:49
of_them:29 of_those:43 off:43 off_$:23 office_$:20 oil:-20 on:57 on_$:18 on__th:30 on_a:-28 on_friday:56 on_it:31
on_saturday:-29 on_sunday:-19 on_the:42 on_thursday:26 one:-100 one_$:-102 one__the:18 one_please:-24 only:47
open:-31 open_$:91 opening:58 or:-41 or_$:-46 or_tues:18 otro_dia:19 out:-65 para:97 para__de:30 para__lo:-33
para_cuando:23 para_el:26 para_la:37 para_que:-35 pasado_$:-24 pasado_manana:31 pedal:-23 pero:103 pero__las:59
pero_a:69 pero_el:24 pero_le:-54 pick:50 pm:43 podria:28 podria__el:21 poquito:31 por__la:32 por__manana:33
por__tarde:43 por_favor:-20 por_la:81 por_las:-21 porque:38 posible:112 posible_$:107 possible:56 possible_$:60
precio:-24 precio_$:-22 primera:22 pronto:56 pueda:86 puedan:71 puede:24 puede_$:58 puede__el:19 puedo:77 puedo_el:25
que:27 que_$:-18 que__abren:-20 que__el:25 que__la:-18 que__por:23 que__trabajo:18 que_cierren:24 que_hora:-51
que_me:25 que_no:23 que_tal:31 que_tan:-18 queda:-39 quedan:18 quisiera:22 quit:19 rd:46 really:30 remind:-30
remind__in:-32 remind_me:-30 retired:43 ride:18 right:36 ring:-32 run:35 run_me:22 sabado:156 sabado_$:41
sabado__las:34 sabado_a:33 said:-26 sale:-37 sale_humo:-54 saliendo:52 saliendo_de:23 same:-27 same_day:-24
same_time:-20 sat:102 saturday:107 saturday_morning:24 saturdays:-34 saturdays_$:-36 schedule:-27 school:32 se:65
se_lo:-28 se_puede:53 see_you:-23 semana:90 semana_$:52 semana_de:33 ser_el:20 set:-25 shakes:-49 shaking:33 shop:-32
shop_$:-32 should:-23 should_i:-18 si:85 si__jueves:-28 si__llevo:-20 si__martes:-43 si_el:-44 si_gracias:26
si_hay:26 si_lo:-36 si_me:23 si_puedo:19 sigue:-19 sin:-19 slot:-28 slow:19 so:66 so__can:20 so_i:29 sold:32
someone:23 soon_as:22 sooner:58 sooner__better:33 sooner_the:33 soonest:75 sounds:-26 soy:20 squeeze:40
squeeze__in:40 squeeze_me:40 st:33 stop_$:-33 stop_by:34 stop_in:24 street:25 su:-57 su_horario:-47 sunday:-30
sunday_$:-95 sunday_or:36 swapped:-20 switch:-53 take_the:-28 tal:25 tan:-24 te:-20 te_digo:-23 tempranito:20 ten:21
tendra:58 tengan:127 tengo__el:23 tengo_que:-25 text:-50 th:139 th_$:-44 th__the:20 th_at:24 th_so:35 thanks:-19
thanksgiving:19 thanksgiving_$:19 that:18 that__the:28 that_day:86 the:100 the_$:-20 the__after:60 the__at:18
the__for:-21 the__guy:-29 the__in:22 the__on:-20 the__one:-75 the__or:43 the__so:33 the__the:92 the__thing:-30
the_am:-34 the_better:88 the_doors:38 the_earlier:54 the_friday:-102 the_kids:25 the_month:42 the_morning:-32
the_nd:48 the_next:37 the_only:22 the_rd:21 the_th:137 the_thing:-21 the_thursday:-21 the_truck:20 the_week:28
the_wrong:-29 then:58 then_$:30 there:21 there_on:-37 thing:-74 thing_$:-66 third:-30 this__the:-35 this_is:-38
those:85 thurs:84 thursday:20 thursdays:-28 tiene:85 tienen_$:39 tienen__de:-29 till:-58 time:20 time_$:-30 tipo:21
tires__on:-20 to:-76 to__in:29 to__my:20 to_call:-18 to_friday:-22 to_get:35 to_monday:-50 to_next:-21 todavia:-21
today_$:-42 todo:-33 tomorrow:76 tomorrow_$:-23 tomorrow_at:25 too:-27 trabajan:-61 trabajo:57 trabajo_$:43 trae:23
truck:25 try:-127 try__in:-20 try_me:-126 tues:62 tues_$:24 tuesday:58 tuesday__is:-20 turno:22 two:22 two_weeks:37
ultima:19 un:65 un__de:22 un_carro:23 un_dia:-26 una:25 una_cita:42 unos:-38 urge:20 urgente:-25 ustedes:39 va_a:-37
vacaciones:20 vez:-44 viaje:-19 viernes:47 viernes_$:-38 viernes__la:34 viernes__las:-66 viernes_a:-47
viernes_pero:26 voy:-45 voy_a:-33 was:-34 we:-18 we__a:18 we__instead:60 we__it:-48 we_do:23 we_have:19 wed:108
wed_$:22 wed_at:46 wednesday:55 weds:23 week:95 week_$:43 week_of:21 weekend:45 weekend_$:37 weeks:-29 went:-27
were:-18 what_$:-24 what__it:31 what__the:22 what__your:-18 what_about:92 what_are:-45 what_i:-32 what_time:-21
what_will:25 when_you:26 whenever:100 whichever:40 who:-33 whole:-18 wifi:-29 wifi_$:-28 will:29 will__take:23
will_it:42 wiper:26 with:-42 with_me:-32 with_the:28 work:33 work_$:45 works_$:-26 would__be:-19 would_be:41
wrong:-37 y:101 y__para:23 y_en:31 y_eso:-18 y_si:19 ya:-50 ya_no:-52 yeah:19 yes_$:-43 yes__i:-18 yes__works:-37
yet:-71 yo:44 you:107 you__im:37 you__it:-42 you__me:25 you__my:-26 you__on:-61 you__the:30 you__what:-23 you_can:57
you_close:20 you_do:128 you_got:75 you_guys:-51 you_have:35 you_on:19 you_pick:38 you_there:-34 you_work:-26
your__for:21 your__hours:-38 your_address:19
"""
