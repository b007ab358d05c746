"""What speaks for and against `propose`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "propose"
BIAS = -203
WEIGHTS = """\
#abad:164 #able:59 #abor:-36 #abou:134 #abra:45 #abre:-71 #acer:-25 #acio:114 #acom:22 #adel:-29 #adit:33 #ados:-79
#afte:78 #ahor:-44 #aigo:24 #aila:79 #ajan:-82 #akin:29 #ales:-31 #alga:-33 #algo:91 #alie:70 #alqu:136 #also:57
#ambi:-74 #ampe:-30 #anan:82 #ance:-50 #ando:41 #ange:-25 #anit:36 #anme:-23 #anos:22 #anso:25 #anta:-27 #ante:46
#anto:27 #anyt:163 #apri:36 #aqui:32 #arde:33 #ario:-98 #arle:-25 #arli:88 #arly:83 #aron:-49 #arou:50 #arte:101
#arts:-22 #arzo:-66 #asap:311 #asar:-22 #asta:-75 #aste:-53 #ater:55 #atev:58 #atur:79 #avai:106 #avia:-29 #avid:-28
#avis:-25 #aybe:83 #baby:-31 #bado:149 #baja:-101 #bajo:71 #been:-47 #befo:81 #bett:62 #betw:50 #biar:-32 #bila:37
#blem:-43 #blue:-24 #bout:156 #brak:49 #brea:33 #bren:-76 #caci:28 #caig:30 #cale:-26 #call:-70 #camb:-76 #came:-52
#canc:-61 #cans:26 #cept:22 #cerr:-56 #cesi:49 #char:-32 #chec:-26 #ched:-53 #chev:59 #choo:52 #cial:-30 #cion:28
#cita:35 #cked:-38 #clas:53 #clos:48 #cole:115 #come:-54 #como:49 #comp:-25 #conf:-37 #cost:-22 #coul:121 #crib:-46
#cual:61 #cuan:53 #cuel:30 #davi:-28 #days:-41 #deal:24 #deja:-35 #dela:-30 #deme:-23 #depe:-64 #desp:28 #digo:-95
#ding:28 #dito:25 #dnes:51 #domi:-27 #door:37 #down:27 #dred:-39 #dria:68 #driv:-32 #drop:87 #dule:-45 #eall:27
#earl:170 #ease:28 #east:-41 #eces:32 #ecia:-36 #ecio:-32 #ecit:25 #edal:-25 #edan:118 #eded:-31 #edia:23 #edio:48
#edne:56 #edul:-45 #eede:-31 #eeke:38 #eeks:-48 #eeze:30 #efer:22 #efor:81 #egar:-30 #egue:-36 #egun:-25 #eith:44
#ejor:33 #eken:38 #elan:-25 #eman:112 #emin:-52 #emos:-27 #empr:38 #ende:-68 #endi:-26 #endo:46 #endr:84 #enen:37
#ener:-22 #enev:138 #enga:155 #enin:142 #enme:-31 #enos:86 #ensa:-29 #entr:96 #epen:-64 #erco:111 #erne:91 #eron:-34
#erra:-43 #esas:66 #esca:28 #escr:-42 #escu:28 #esda:143 #esit:46 #esos:56 #espa:66 #espe:-62 #espu:25 #esta:-136
#esto:37 #eter:32 #etim:32 #etir:86 #ette:66 #etwe:50 #evar:35 #even:53 #ever:101 #eves:78 #exti:-23 #feri:-28
#ffic:25 #fice:27 #fill:-34 #find:25 #firm:-31 #firs:57 #fore:72 #forg:-26 #four:-26 #free:61 #fren:-30 #fres:-41
#frid:79 #from:95 #fter:73 #gent:-48 #give:-94 #givi:22 #gles:25 #goin:30 #good:39 #gran:23 #grea:-51 #grin:28
#gual:28 #guen:-24 #guie:30 #guna:27 #gunt:-30 #guys:-68 #habl:-47 #habr:39 #hace:-22 #hake:-63 #haki:29 #half:27
#hanc:31 #hast:-65 #hate:57 #have:78 #heck:-27 #hedu:-45 #hene:138 #here:26 #heve:59 #hich:59 #hijo:-24 #hing:39
#hird:-32 #hold:-28 #hool:49 #hora:-105 #hori:-31 #hort:25 #hose:101 #hour:42 #humo:-52 #hund:-34 #hurs:84 #iado:-38
#ible:173 #ibre:54 #iche:58 #idad:-34 #iday:95 #idea:-38 #iemp:-29 #iend:60 #iene:75 #ient:30 #iera:58 #ierc:127
#iere:-25 #iern:87 #iero:-33 #ierr:39 #iest:28 #ight:39 #igua:28 #igue:-42 #igui:24 #ilab:83 #ilad:33 #ille:-34
#imer:51 #inde:35 #ingo:-22 #ings:112 #insp:27 #inst:83 #ione:26 #iper:27 #ired:65 #ires:-26 #irmo:-48 #irst:57
#isie:30 #isit:-26 #ismo:47 #itch:-50 #ithe:43 #jaja:-35 #jeje:-23 #jubi:37 #juev:104 #just:-34 #kend:38 #kids:54
#king:71 #ksgi:22 #labl:80 #labo:-36 #lace:-35 #lado:39 #lase:24 #lass:29 #late:49 #ldnt:-23 #leas:31 #lega:-35
#lego:31 #legu:-31 #leme:-46 #lets:-24 #leva:37 #libr:55 #lien:61 #lier:71 #like:93 #lled:-32 #lleg:-30 #lose:29
#lqui:136 #ltim:31 #lueg:-24 #luga:38 #lune:175 #mana:199 #mand:-41 #mart:114 #marz:-66 #matt:23 #mayb:83 #mbia:-58
#medi:77 #mejo:31 #mela:-26 #meno:85 #mens:-27 #mera:44 #meti:31 #mier:144 #mina:-24 #mind:-85 #mine:-25 #mism:54
#moda:22 #mond:102 #more:-38 #morr:106 #moth:23 #move:-55 #movi:-25 #mpra:59 #mpre:-28 #much:-31 #myse:-34 #nana:70
#navi:-28 #ncel:-60 #nday:36 #ndra:66 #ndre:-39 #nece:41 #neit:37 #nero:-31 #ners:-27 #nesd:56 #nest:84 #neve:59
#next:231 #nfir:-33 #ngan:134 #nged:-29 #ngin:26 #ngos:-26 #nico:37 #nigh:-71 #nine:35 #ning:140 #nito:25 #nksg:22
#nner:-29 #noma:23 #none:55 #noon:33 #nsaj:-27 #nspe:27 #nste:71 #ntem:-34 #ntes:68 #ntra:46 #ntre:39 #nuev:-27
#nyth:118 #ocho:30 #odav:-28 #odri:57 #offi:27 #oger:-22 #okin:34 #oles:114 #omas:35 #omes:-47 #omod:27 #omor:110
#onda:107 #oner:54 #ones:91 #onfi:-34 #only:59 #onta:22 #onto:103 #oone:129 #oors:29 #open:64 #oqui:30 #orar:-91
#oras:-40 #orit:-25 #orqu:46 #orro:107 #orte:22 #osib:111 #ossi:76 #osto:-25 #otat:38 #ould:88 #oupo:-24 #oure:28
#ours:-39 #ovin:-29 #oxim:41 #paci:78 #para:106 #part:-43 #pasa:-51 #pase:-31 #past:25 #peci:-29 #pect:28 #peda:-26
#pend:-75 #peni:98 #pera:-36 #pero:87 #pick:63 #ping:24 #plac:-36 #plea:31 #podr:57 #pons:-23 #poqu:27 #porq:44
#posi:97 #poss:77 #pran:50 #prec:-32 #preg:-30 #pren:-33 #pril:33 #prim:45 #pron:138 #prox:42 #pued:295 #puer:-30
#pull:26 #quee:40 #quie:126 #quin:30 #quis:31 #quit:47 #rade:-30 #rado:-52 #rake:49 #rani:27 #rano:29 #rari:-89
#rcol:126 #rdan:-22 #rday:73 #read:-22 #reak:23 #real:42 #reat:-54 #reci:-30 #refe:22 #regu:-39 #remi:-53 #rend:-33
#reno:-26 #resh:-33 #reti:86 #rgen:-42 #rida:83 #ride:26 #righ:68 #rime:51 #rind:28 #ring:-30 #rivi:-24 #rlie:88
#rnes:92 #roca:22 #rong:-52 #ront:132 #rota:43 #roun:45 #roxi:41 #rque:45 #rrad:-67 #rrow:116 #rtes:122 #ruck:31
#saba:164 #said:-26 #saje:-26 #sala:-27 #sale:-60 #sali:58 #same:-42 #satu:80 #scan:27 #sche:-45 #scho:49 #scri:-46
#scue:29 #sday:153 #self:-31 #sema:119 #send:-25 #sgiv:22 #shak:-34 #shes:-33 #shop:-40 #shor:24 #shou:-22 #sibl:189
#side:-24 #siem:-27 #sier:30 #sito:36 #smok:31 #sold:23 #soon:158 #soun:-24 #spac:73 #sper:-45 #spue:25 #sque:45
#ssed:-33 #ssib:78 #stan:-65 #stea:62 #sted:24 #ster:-35 #stop:-41 #suit:36 #sund:-46 #swap:-31 #swit:-62 #take:29
#tart:23 #tead:70 #tely:24 #teme:-34 #temp:60 #tend:73 #teng:180 #tera:31 #tery:-23 #test:36 #teve:58 #text:-67
#than:-24 #that:32 #then:81 #ther:54 #they:-23 #thin:33 #thos:101 #thur:86 #tien:70 #till:-42 #tima:27 #time:71
#tipo:36 #tira:23 #tire:44 #tmrw:23 #todo:-22 #told:-24 #tomo:91 #trae:38 #trai:-25 #tran:27 #tras:23 #troc:22
#truc:32 #tter:58 #tues:156 #turd:80 #twee:50 #ualq:136 #uand:43 #ubil:37 #udge:-27 #ueda:189 #uedo:91 #ueez:36
#uego:-35 #uela:30 #uero:-25 #uesd:87 #ueve:87 #uevo:-26 #ugar:37 #uien:23 #uier:127 #uisi:30 #uito:58 #uits:25
#uldn:-23 #ulti:31 #unda:-61 #undo:26 #undr:-39 #unes:175 #unos:-43 #unte:-49 #urda:80 #urge:-36 #urno:33 #uste:51
#vail:106 #varl:22 #vean:26 #veni:51 #vers:-26 #very:-59 #vete:23 #vida:-36 #vier:73 #ving:-38 #vise:-22 #wedn:56
#weds:38 #week:132 #ween:51 #went:-24 #were:-27 #what:54 #when:97 #whic:60 #whol:-27 #wipe:26 #witc:-62 #with:-33
#work:34 #writ:-24 #wron:-52 #xima:30 #xtin:-23 #year:-24 #your:43 #ysel:-34 #ythi:109 %again_later:93
%again_later%agree:58 %again_later%bring:91 %again_later%busy:-59 %again_later%call_off:25 %again_later%car:-42
%again_later%do_it:26 %again_later%doubt:-97 %again_later%elsewhere:-25 %again_later%fails:36 %again_later%family:42
%again_later%money:-26 %again_later%odometer:-68 %again_later%on_way:70 %again_later%opening:94
%again_later%pay_day:-107 %again_later%phone:-60 %again_later%question:34 %again_later%season:-100
%again_later%staff:27 %again_later%wrong_one:28 %agree:31 %agree%bring:-59 %agree%call_off:30 %agree%car_part:26
%agree%elsewhere:48 %agree%fails:34 %agree%family:76 %agree%gone_car:26 %agree%how_long:101 %agree%leave_me:40
%agree%machine:25 %agree%meaning:35 %agree%odometer:74 %agree%opening:47 %agree%pay_day:42 %agree%phone:56
%agree%place:23 %agree%question:31 %agree%season:55 %agree%smoke_smell:-41 %agree%thanks:37 %agree%wrong_one:83
%away%call_off:-38 %away%car:-40 %away%fails:32 %away%gone_car:32 %away%how_long:28 %away%leave_me:22 %away%lift:61
%away%odometer:34 %away%on_way:55 %away%question:23 %away%refuse:-36 %away%shift_it:-25 %bad%machine:29
%bad%meaning:25 %bad%shake:30 %bring:30 %bring%call_off:-56 %bring%car:58 %bring%car_part:54 %bring%fails:37
%bring%family:26 %bring%lift:-23 %bring%noise:25 %bring%odometer:-46 %bring%on_way:-32 %bring%opening:55
%bring%phone:26 %bring%question:36 %bring%refuse:-35 %bring%shift_it:-117 %bring%staff:25 %bring%start_again:34
%bring%wrong_one:-30 %busy:61 %busy%call_off:28 %busy%family:-23 %busy%leave_me:47 %busy%meaning:35 %busy%on_way:22
%busy%refuse:37 %busy%season:-46 %call_off:-62 %call_off%doubt:39 %call_off%gone_car:-46 %call_off%how_long:51
%call_off%message:-55 %call_off%money:33 %call_off%on_way:23 %call_off%opening:31 %call_off%phone:-49
%call_off%refuse:110 %call_off%season:-105 %call_off%shift_it:62 %call_off%start_again:-36 %call_off%thanks:-30
%call_off%who:-23 %call_off%wrong_one:52 %car%gone_car:-49 %car%lift:44 %car%place:-22 %car%question:-31 %car_part:29
%car_part%do_it:60 %car_part%gone_car:23 %car_part%lift:27 %car_part%money:49 %car_part%noise:33 %car_part%place:24
%car_part%shift_it:42 %do_it:-83 %do_it%how_long:-32 %do_it%on_way:32 %do_it%opening:32 %do_it%pay_day:-32
%do_it%question:29 %do_it%season:-33 %doubt%question:31 %doubt%season:-30 %doubt%shift_it:-60 %doubt%wrong_one:-22
%elsewhere:-35 %elsewhere%place:45 %elsewhere%question:27 %elsewhere%refuse:28 %elsewhere%shift_it:-25
%elsewhere%wrong_one:-42 %fails%phone:28 %fails%refuse:-41 %fails%shift_it:-22 %fails%smoke_smell:22
%fails%start_again:34 %family%odometer:-24 %gone_car%phone:47 %gone_car%season:-31 %gone_car%wrong_one:-30
%how_long:144 %how_long%leave_me:42 %how_long%on_way:27 %how_long%opening:-44 %how_long%pay_day:-31
%how_long%question:-126 %how_long%refuse:31 %how_long%wrong_one:31 %leave_me:56 %leave_me%message:-39
%leave_me%on_way:-23 %leave_me%pay_day:48 %leave_me%season:42 %leave_me%shift_it:38 %leave_me%smoke_smell:22
%leave_me%start_again:-23 %lift%on_way:22 %lift%refuse:27 %machine:56 %machine%meaning:27 %machine%shake:30
%machine%staff:28 %machine%wrong_one:25 %meaning:25 %meaning%question:-75 %meaning%shake:29 %message:-159
%message%on_way:-44 %message%start_again:28 %money:-120 %money%question:51 %money%season:-31 %money%shift_it:-41
%money%smoke_smell:-42 %money%wrong_one:-45 %noise%refuse:-23 %odometer:39 %odometer%on_way:24 %odometer%question:23
%odometer%staff:24 %on_way:93 %on_way%place:78 %on_way%question:30 %on_way%refuse:29 %on_way%season:26
%on_way%shift_it:32 %on_way%wrong_one:-23 %opening:-185 %opening%place:-71 %opening%question:-67 %opening%refuse:25
%opening%staff:-71 %opening%wrong_one:59 %pay_day:-64 %pay_day%question:-33 %pay_day%shift_it:-44 %phone:-136
%phone%refuse:72 %phone%shift_it:-31 %phone%staff:-23 %place%refuse:44 %place%season:22 %place%shift_it:-24
%place%start_again:24 %question:48 %question%shake:-24 %question%who:-35 %refuse%season:-77 %refuse%shift_it:55
%refuse%start_again:29 %season:-98 %season%shift_it:-99 %season%start_again:-35 %season%wrong_one:-54 %shake:-54
%shift_it:95 %shift_it%wrong_one:-49 %smoke_smell:-65 %staff:-78 %staff%start_again:29 %staff%wrong_one:-29
%thanks:-52 %who:-58 %wrong_one:-56 @?:63 @after_visit:-142 @car:-123 @confirm:-868 @confirm_stop:-73 @day:272
@later:-99 @nothing:-329 @odometer:-216 @offers:-385 @offers_:-130 @offers_the_th:-79 @reading:80 @time:203
@times:525 ^_$:-232 ^_a:55 ^_afternoon:-32 ^_all:-33 ^_am:-24 ^_antes:-32 ^_any:185 ^_are:-77 ^_as:51 ^_asap:155
^_ask:-27 ^_at:45 ^_been:-32 ^_call:-72 ^_can:-28 ^_cancel:-38 ^_changed:-22 ^_check:-29 ^_could:38 ^_cual:-70
^_cualquier:75 ^_cuando:61 ^_cuanto:-44 ^_depende:-41 ^_do:-131 ^_early:27 ^_el:-112 ^_end:46 ^_entre:38 ^_es:-62
^_estan:-71 ^_estoy:-23 ^_friday:-105 ^_give:-62 ^_go:-22 ^_got:47 ^_hableme:-51 ^_half:22 ^_hasta:-38 ^_have:28
^_hours:37 ^_how:-86 ^_hoy:61 ^_id:51 ^_idk:-30 ^_in:79 ^_is:-27 ^_it:-24 ^_la:-110 ^_last:23 ^_lets:-44 ^_lo:111
^_lunes:24 ^_make:41 ^_manana:46 ^_martes:24 ^_maybe:44 ^_me:-51 ^_mejor:40 ^_miercoles:23 ^_mon:32 ^_monday:23
^_my:61 ^_neither:37 ^_new:-26 ^_next:133 ^_ninguna:34 ^_no:38 ^_none:56 ^_noon:29 ^_not:-40 ^_ok:-32 ^_open:-138
^_para:-69 ^_please:-25 ^_podria:29 ^_prefiero:-23 ^_que:-83 ^_quiero:39 ^_remind:-53 ^_right:31 ^_sabado:28 ^_sat:75
^_saturday:47 ^_se:-45 ^_shes:-31 ^_si:-51 ^_stop:-47 ^_sunday:38 ^_sure:24 ^_swamped:-26 ^_the:-160 ^_this:36
^_thursday:-62 ^_todavia:-22 ^_tomorrow:54 ^_trabajan:-66 ^_try:-116 ^_tues:60 ^_tuesday:33 ^_un:30 ^_una:27 ^_va:24
^_wed:79 ^_what:-29 ^_when:-35 ^_whenever:130 ^_which:-43 ^_whichever:50 ^_will:-32 ^_works:-25 ^_ya:-45 ^_yeah:41
^_yo:26 ^_you:-34 a:30 a__hora:112 a__no:24 a__of:26 a__si:30 a__weeks:-39 a__y:40 a_day:-25 a_esa:22 a_few:-22
a_hole:30 a_la:75 a_las:155 a_monday:35 a_new:-22 a_primera:23 a_ring:-51 a_saturday:-27 about:135 abran:22 abren:-76
abren_$:-72 adelante:-22 after:84 after_$:36 after__day:-33 after_that:30 after_work:26 afternoon:-25 again_on:-26
ahorita:-30 al:46 algo:65 all_day:-34 also:57 am:97 am_y:24 an:141 an__change:29 an_appointment:24 an_hour:24
an_inspection:26 an_oil:27 an_opening:55 and:176 and__long:25 and__need:-37 and_can:31 and_how:32 and_i:-30 and_im:38
and_the:-24 and_we:24 and_what:23 ando:30 antes:72 any:324 any__but:47 any__next:40 any__that:27 any__those:23
any_chance:28 any_day:127 any_of:34 any_time:57 anything:99 anything_$:-32 april:33 aqui:22 are:-85 are__there:-48
are_you:-87 are_your:-50 around:54 around_$:30 as:128 as__as:59 as_of:-43 as_you:58 asap:311 asap_$:121 asi_que:31
ask:-170 ask__after:-34 ask__again:-26 ask_me:-137 at:54 at_$:-23 at__it:27 at__so:28 at_and:48 at_instead:-32
at_noon:-37 at_or:-50 at_work:-44 available:83 baby:-30 bad:29 be:145 be_$:27 be_best:-23 be_better:35 be_the:36
been:-47 been__to:-48 before:81 before_the:34 better:62 better_$:52 between:50 bien:25 blue:-24 bout:22 brakes:29
break:24 bus:32 but:197 but__is:23 but__it:52 but__me:-26 but_it:-27 but_monday:45 but_the:30 by:67 by_tomorrow:26
caigo:30 call:-74 call_me:24 came:-47 can:251 can__be:60 can__come:46 can__do:139 can__it:61 can__me:56 can__stop:30
can__switch:-38 can_it:44 can_my:-26 can_you:48 cancel:-61 cancel_my:-44 cant_make:-32 car:-41 carro:-28 chance:32
changed_it:-26 check:-44 check__me:-38 check_with:-40 christmas_$:-25 cita:23 cita_$:-42 cita__el:23 cita__favor:29
cita_el:35 cita_para:30 cita_por:29 clase:22 clock:29 close_$:28 come__friday:34 come__instead:-44 come_at:-25
come_in:24 come_thursday:24 comes:-47 como:22 como__las:43 como_a:32 con:-79 con_el:-26 con_ustedes:-30 confirmo:-48
confirmo_$:-42 cost:24 cost_and:27 costo:-39 costo_$:-30 could:141 could__do:58 could__it:26 could__the:22
could_do:50 could_you:40 cual:-67 cual__su:-49 cual_es:-52 cualquier:117 cualquier__menos:40 cualquier_dia:83
cuando:34 cuando__el:-26 cuando_lo:-30 cuando_salga:-29 cuanto:24 cuanto_$:-23 cuanto_se:78 da:32 da__el:23
da_igual:33 day:138 day_$:-79 day_after:61 day_but:37 day_is:35 day_thing:-27 de:65 de__a:52 de__al:28 de__dia:-39
de__dos:-22 de__el:28 de__la:-25 de__me:37 de__semana:27 de_aqui:22 de_esas:23 de_la:32 de_las:-54 de_los:31
de_manana:-27 de_mes:44 de_paso:25 deal:26 deal_$:31 dejo_en:-38 del_jueves:-50 depende:-41 depends:-23 descanso:25
despues:25 despues_$:-25 despues_del:37 di:-26 dia:157 dia__el:51 dia_de:39 dia_menos:65 dia_que:33 dias_$:27
digame:-26 digo:-94 digo_$:-66 do:119 do__at:-24 do__guys:-30 do__have:-47 do__instead:35 do__th:50 do__work:-23
do_friday:51 do_i:-29 do_instead:96 do_the:41 do_thursday:-27 do_you:-122 does:-28 doesnt_matter:27 domingo_o:33
domingos:-26 domingos_$:-33 doors:29 dos:-30 dos_horas:-31 driving:-24 drop:78 drop_it:39 earlier:72 early:82
easter:-43 easter_$:-43 el:118 el__despues:25 el__en:32 el__hoy:-26 el__pasado:-43 el__pero:32 el__puedo:40
el__que:53 el__sea:36 el__si:36 el__temprano:22 el_carro:-40 el_costo:-23 el_de:-33 el_dia:23 el_jueves:60
el_lunes:105 el_martes:74 el_mes:-31 el_miercoles:70 el_mismo:-42 el_pedal:-24 el_precio:-27 el_que:24 el_sabado:124
el_trabajo:-26 el_viernes:27 en__del:-26 en__dias:-39 en__escuela:29 en__manana:-46 en__se:87 en__tarde:66
en_cuanto:73 en_el:-24 en_la:40 en_marzo:-40 en_unos:-42 end:49 end_$:-23 end__the:52 end_of:63 ends:38 entre:51
era:-34 es:-145 es_$:-23 es__horario:-49 es_de:-35 es_mi:39 es_su:-49 esa_hora:22 esas:66 escuela:30 ese:37
ese__no:24 ese_dia:46 eso_de:23 esos:49 espacio:71 espacio_$:45 esta:-74 estan:-75 estan__el:-70 este_mes:-43
evening:36 every:-51 every_morning:-28 favor_$:-35 few:-23 filled:-34 filled_it:-29 fin:58 fin__mes:42 fin_de:40
finde:26 finde_$:31 fine_$:-29 first:57 first__of:26 first_week:26 fit:45 fit__in:32 fit_me:23 for:112
for__inspection:25 for__is:-23 for__oil:47 for_a:24 for_an:65 for_me:69 for_that:-26 for_thursday:-24 free:73
freno:-25 fresh:-33 fri:51 friday:62 friday_$:102 friday_afternoon:-55 friday_but:52 friday_instead:39 friday_is:-40
friday_morning:22 fridays:23 from:95 from_the:32 get:25 get_in:23 get_my:27 give:-94 give__a:-88 give_me:-91 go:-29
go__friday:-43 go_with:-40 going:30 going_to:23 good:39 good__me:23 got:224 got_$:104 got_a:53 got_anything:79
got_it:-24 great:-49 guy:-53 guys:-61 guys_$:-22 guys_open:-32 hableme:-42 hableme_por:-39 habra:34 hacer:-27 half:27
has:52 hasta:-65 hasta__hora:-30 hasta_que:-46 have:57 have_an:40 have_me:22 hay:69 hay_$:36 hold:-25 hole:31 hora:41
hora_$:23 hora_del:22 hora_que:80 horario:-93 horas:-40 hour:74 hours:-32 hours_$:-26 how:27 how__are:-22
how__hours:25 how__is:-29 how__of:-23 how__would:-23 how_about:69 how_bout:24 hoy:82 hoy_$:-33 hoy__de:25 hoy__la:34
hoy_en:38 hoy_mismo:68 humo:-52 humo_$:-56 hundred:-44 i:-120 i__a:-40 i__at:-55 i__by:32 i__from:23 i__in:37
i__my:-37 i__out:30 i__to:-53 i__you:-36 i_be:-35 i_come:24 i_stop:27 i_switch:-39 i_work:39 i_would:-27 id:73
idea:-34 idk:-33 if:68 if__can:23 if__is:46 if_i:-50 if_that:26 if_you:46 igual:29 ill:32 ill_be:46 ill_stop:25
ill_take:-22 ill_wait:29 im:103 im_not:-24 im_retired:53 in:66 in_$:42 in__day:-24 in__the:43 in_friday:48 in_the:-50
in_tomorrow:24 in_two:37 in_your:38 instead:71 instead_$:96 is:84 is_$:-64 is__at:29 is__but:26 is__on:26 is__the:-57
is_better:-55 is_fine:31 is_not:31 is_ok:39 is_on:-24 is_shaking:28 is_that:-27 is_the:-78 is_there:40 is_this:-25
is_thursday:25 ish:43 it:-28 it_$:-53 it__at:-28 it__friday:36 it__in:-28 it__on:-31 it_and:39 it_be:60 it_cost:23
it_friday:27 it_in:29 it_myself:-28 it_shakes:-53 it_to:-42 jueves:78 jueves_$:-78 jueves__a:57 jueves__la:41
jueves__las:-25 jueves_pero:51 just:-38 just__i:-32 kids:51 la:74 la_$:-33 la__de:41 la__el:44 la__las:-38 la__no:24
la__que:83 la__semana:42 la_cita:-41 la_de:-58 la_del:-45 la_hora:83 la_manana:-53 la_proxima:32 la_semana:54
la_tarde:76 la_ultima:26 labor:-36 labor_day:-38 las:89 las_$:-86 las__y:27 las_dos:-30 las_no:33 las_y:44
late__you:-24 late_are:-22 later:63 le:-123 le_caigo:26 le_digo:-69 le_sale:-56 let:-38 let_me:-29 lets:-24 libre:54
libre_$:30 light:28 like:93 like_$:53 list:-23 llego:31 llego_$:33 llegue:-30 lo:-126 lo__a:-25 lo__el:-37 lo__en:-92
lo__pronto:95 lo__que:-24 lo_dejo:-35 lo_di:-25 lo_llevo:-59 lo_mas:121 lo_tengo:-28 lol:27 long_$:42 los:43
los__en:38 los_domingos:-22 luego:-25 lugar:38 lugar_$:48 lunes:169 lunes__las:23 lunes_a:40 make_it:46 manana:87
manana_$:-32 manana__las:35 manana_a:40 manana_temprano:23 many_hours:25 martes:114 martes_$:67 martes__la:26
martes__le:-57 martes_a:25 martes_en:22 martes_pero:-48 marzo:-66 marzo_$:-30 mas:150 mas__posible:36 mas__que:53
mas_pronto:106 mas_temprano:-29 matter:24 maybe:83 maybe_next:65 me_$:102 me__a:24 me__el:49 me__igual:38 me__on:-27
me__ring:-51 me__the:-36 me__week:-107 me_a:-91 me_after:-66 me_again:-24 me_before:27 me_da:36 me_in:-28
me_next:-104 me_quedan:34 me_then:-24 me_what:22 media:31 media_$:23 medio:37 medio_dia:27 mejor:32 mejor_$:-25
mejor__lunes:42 mejor_el:67 menos:85 menos__lunes:30 menos_el:48 mes_pasado:-34 mi_cita:-35 mi_turno:23 mientras:22
miercoles:116 miercoles_$:23 min:-24 mind:-33 mine:-22 mis:-42 mismo:55 mon:61 monday:107 monday_$:-53 monday__be:42
monday_at:35 monday_morning:-30 monday_so:-22 more:-27 morning:-82 morning_$:-83 morning_to:-55 mornings:76 move:-44
move__to:-24 moving:-29 much:-29 much__my:-23 my:57 my__in:22 my_morning:-22 my_number:25 my_shift:24 my_tuesday:-22
myself:-34 n:33 navidad:-24 nd:53 necesito:48 necesito_que:28 need:41 needed:-31 neither:37 never:-59 new:-96
new_tires:-34 next:231 next_$:27 next_week:53 ni__ni:24 night:-67 night_$:-47 night_and:-24 nine:31 ninguna:28 no:24
no_$:-80 no__do:39 no__para:59 no__yet:-34 no_but:-44 no_can:40 no_el:65 no_good:30 no_hay:48 no_idea:-32 no_lo:-28
no_quiero:-22 no_se:-61 no_sea:41 no_tiene:53 no_trabajo:33 no_voy:-44 noche:-28 nomas:23 none:55 none__those:43
none_of:38 noon:38 not:-44 not__yet:-22 not_monday:-29 not_now:-30 not_sure:-27 o:-30 ocho:30 oclock_$:-30 of:69
of__how:26 of__month:42 of__morning:-23 of_my:-24 of_the:48 of_those:60 off__list:-25 off_the:-27 oh:-22
oil_change:33 ok:34 on__it:24 on_a:-26 on_friday:47 on_it:30 on_me:29 on_monday:-23 on_saturday:-28 on_saturdays:-42
on_sunday:-31 on_thursday:31 one:-104 one_$:-110 one__the:26 one_please:-29 only:59 open:-56 open_$:80 opening:77
or:-33 or_$:-65 out:-71 over_$:29 pal:36 para:101 para__de:29 para__lo:-23 para__sabado:37 para_cuando:45 para_la:51
para_que:-28 pasado_$:-25 pasado_manana:24 past:26 pedal:-35 pero:96 pero__las:65 pero_a:74 pero_el:23 pero_le:-59
pick:61 place:-27 please:26 pm:58 podria:57 podria_ser:39 poquito:27 por:-35 por__la:26 por__manana:27 por__tarde:39
por_la:77 por_que:-23 porque:46 posible:111 posible_$:111 possible:64 possible_$:67 precio:-23 precio_$:-23
primera:42 pronto:103 pronto_posible:35 pronto_que:33 proxima:32 proxima_semana:32 pueda:89 pueda_$:85 puedan:87
puede:39 puede_$:61 puedo:104 puedo__el:25 puedo_el:37 que:62 que__el:27 que__la:-27 que__me:27 que__sea:23
que_hora:-48 que_me:39 que_no:37 que_se:27 que_sea:49 que_sigue:-22 que_tal:26 que_tan:-27 que_tengan:38 quedan:25
quiero__el:28 quiero_ir:22 quisiera:30 rd:42 rd_$:47 really:27 remind:-50 remind__in:-42 remind_me:-50 retired:64
retired_$:36 ride:27 right:54 right__the:23 right__you:26 ring:-26 road:24 room:23 rotation:26 run:59 sabado:164
sabado__las:41 sabado_a:41 said:-26 sale:-48 sale_humo:-58 salga:-32 salgo:26 saliendo:70 saliendo_de:25
saliendo_del:30 same:-37 same_day:-25 sat:130 sat_morning:26 saturday:117 saturday_$:36 saturday_hours:-58
saturday_morning:30 saturdays:-37 saturdays_$:-43 say:-24 schedule:-31 school:49 se:46 se_lo:-43 se_pueda:103
se_puede:61 se_va:-29 sea:103 sea_$:29 semana:117 semana_$:43 semana_de:22 set:-39 shakes:-53 shaking:29 shes:-33
shes_at:-23 shop:-30 shop_$:-27 si:62 si__dejo:-34 si__jueves:-29 si__llevo:-38 si__martes:-49 si_el:-35 si_lo:-72
si_me:43 si_puedo:23 siempre:-27 siempre_no:-24 sigue:-27 siguiente:24 so:115 sold:23 sometime:33 soon:29
soon__you:51 soon_as:49 sooner:47 sooner__better:46 sooner_the:46 soonest:82 soy:40 squeeze:36 squeeze__in:35
squeeze_me:35 st:23 start:26 stop:-36 stop_$:-58 stop__me:-27 stop_by:32 stop_in:32 stop_texting:-23 su:-44
su_horario:-49 suits:25 sunday:-53 sunday_$:-127 sunday_or:26 switch:-57 switch_to:-36 take:28 take_the:-31 tal:22
tan:-25 tarde_$:-28 te:-37 te_digo:-26 tempranito:27 temprano:23 temprano_$:-22 ten:66 ten_$:29 tendra:40 tengan:152
tengo_que:-25 text:-41 texting:-23 th:162 th_$:-39 th_is:30 th_so:29 thanksgiving:22 that:32 that_day:90 the:25
the__after:43 the__for:-31 the__guy:-32 the__in:22 the__is:43 the__on:-37 the__one:-81 the__or:38 the__the:98
the__thing:-29 the__to:25 the_am:-45 the_better:108 the_doors:24 the_earlier:56 the_friday:-116 the_kids:24
the_month:46 the_nd:53 the_next:41 the_rd:26 the_school:27 the_sooner:33 the_th:170 the_thursday:-36 the_wrong:-43
then:81 then_$:43 there_on:-39 they:-22 thing:-91 thing_$:-73 third:-32 this__the:-42 this_is:-47 this_month:-30
this_morning:-34 this_week:39 this_weekend:41 those:101 thurs:75 thurs_$:-26 thursday_$:-32 thursday__it:-30
thursday_what:23 thursday_works:-43 tiene:38 tiene__el:62 tienen:40 tienen_$:61 tienen__de:-23 till:-37 time_$:-28
tipo:36 tipo_$:25 tmrw:23 to__in:31 to__it:25 to__my:27 to_be:52 to_call:-24 to_get:54 to_monday:-49 todavia:-28
todavia_no:-22 today_$:-49 todo:-42 todo__dia:-28 told:-24 tomorrow:100 tomorrow_$:-26 tomorrow_at:26 trabajan:-85
trabajo:74 trabajo_$:45 truck:31 try:-150 try__in:-31 try_me:-144 tu:-42 tues:68 tuesday:90 turno:34 two:39 two_$:-33
two_hundred:-27 two_weeks:41 ultima:32 un:71 un__el:24 una_cita:41 una_hora:-34 unas_semanas:-23 unos:-43 up:-32
urgent:-24 use:-25 usted:22 va_a:-39 van:-25 ver:25 vez:-34 viernes:82 viernes_$:-47 viernes__de:22 viernes__la:27
viernes__las:-60 viernes_a:-35 viernes_pero:25 voy:-60 voy_$:-24 voy_a:-37 was:-28 we__instead:74 we__it:-48 we_do:40
wed:147 wed_$:22 wed_at:49 wednesday:44 weds:38 week:123 week_$:77 week_after:25 weekend:68 weekend_$:42 weekends:-30
weeks:-47 weeks_$:-34 went:-28 were:-27 what__the:29 what__your:-29 what_about:109 what_are:-57 what_i:-37
what_will:24 whatever:58 when:-26 when_you:26 whenever:118 whenever_you:71 whichever:58 who:-23 whole:-27 will_it:48
with:-26 with_me:-26 with_the:29 wk:22 work:30 work_$:33 work__me:-28 works_$:-47 works_but:-37 would__be:-43
would__better:42 would__to:23 would_be:32 would_i:-37 write:-24 wrong:-52 y:117 y_$:24 y_en:31 y_media:28 ya:-88
ya_casi:30 ya_no:-78 yeah_$:-22 year:-22 yes_$:-43 yes__works:-42 yet:-98 yet__me:-61 yo:66 you:103 you__a:-35
you__an:52 you__anything:28 you__im:30 you__it:-48 you__my:-35 you__on:-66 you__what:-25 you_can:86 you_close:28
you_do:140 you_got:102 you_guys:-59 you_have:31 you_in:-22 you_pick:30 you_see:24 you_there:-43 you_work:-23 your:23
your__hours:-52 youre:25 youve_got:22
"""
