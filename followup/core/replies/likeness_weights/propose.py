"""What speaks for and against `propose`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "propose"
BIAS = -203
WEIGHTS = """\
#abad:162 #able:58 #abor:-39 #abou:132 #abra:42 #abre:-79 #acer:-27 #acio:113 #adel:-30 #adit:34 #ados:-82 #afte:83
#ahor:-48 #aigo:25 #aila:82 #ajan:-87 #akin:29 #ales:-32 #alga:-34 #algo:94 #alie:71 #alqu:167 #also:57 #ambi:-76
#ampe:-30 #anan:89 #ance:-59 #ando:34 #ange:-28 #anit:37 #anso:25 #anta:-28 #ante:66 #anto:26 #anyt:171 #apri:36
#aqui:32 #arde:29 #ario:-102 #arle:-25 #arli:92 #arly:89 #aron:-43 #arou:54 #arte:109 #arzo:-65 #asap:370 #asar:-25
#asta:-88 #aste:-54 #ater:59 #atev:59 #atur:77 #avai:109 #avia:-29 #avid:-29 #avis:-30 #aybe:82 #baby:-31 #bado:146
#baja:-106 #bajo:77 #been:-48 #befo:94 #bett:71 #betw:51 #biar:-27 #bien:25 #bila:37 #blem:-45 #bout:153 #brak:49
#brea:34 #bren:-84 #caci:29 #caig:32 #cale:-27 #call:-73 #camb:-78 #came:-53 #canc:-68 #cans:27 #cerr:-57 #cesi:51
#char:-33 #chec:-28 #ched:-54 #chev:60 #choo:55 #cial:-32 #cion:30 #cita:36 #cked:-38 #clas:55 #clos:48 #cole:119
#come:-47 #como:52 #comp:-27 #conf:-40 #coul:128 #crib:-47 #cual:89 #cuan:49 #cuel:31 #davi:-29 #days:-41 #deal:25
#deja:-37 #dela:-31 #depe:-70 #desp:29 #digo:-98 #ding:28 #dito:26 #dnes:57 #domi:-31 #door:40 #down:29 #dred:-46
#dria:67 #driv:-33 #drop:93 #dule:-46 #eall:26 #earl:180 #ease:28 #east:-42 #eces:34 #ecia:-38 #ecio:-32 #edal:-26
#edan:121 #eded:-31 #edio:49 #edne:62 #edul:-46 #eede:-31 #eeke:39 #eeks:-55 #eeze:34 #efor:94 #egar:-35 #egue:-31
#egun:-27 #eith:43 #eken:39 #elan:-26 #eman:119 #emin:-57 #emos:-33 #empr:42 #ende:-72 #endi:-26 #endo:46 #endr:85
#enen:43 #enev:150 #enga:157 #enin:146 #enme:-32 #enos:107 #entr:111 #epen:-71 #erco:115 #erne:90 #eron:-37 #erra:-45
#esas:67 #esca:29 #escr:-42 #escu:29 #esda:161 #esit:48 #esos:56 #espa:66 #espe:-63 #espu:26 #esta:-148 #esto:29
#eter:33 #etim:33 #etir:87 #ette:75 #etwe:51 #evar:43 #even:53 #ever:114 #eves:82 #exti:-25 #feri:-29 #ffic:25
#fice:27 #fill:-35 #find:26 #firm:-34 #firs:56 #fore:86 #forg:-33 #four:-27 #free:65 #fren:-29 #fres:-42 #frid:100
#from:95 #fter:78 #gent:-49 #give:-95 #goin:27 #good:32 #grea:-54 #grin:27 #gual:29 #guie:32 #guna:28 #gunt:-31
#guys:-68 #habl:-50 #habr:40 #hace:-26 #hake:-64 #haki:28 #half:29 #hanc:29 #hast:-77 #hate:59 #have:84 #heck:-31
#hedu:-46 #hene:150 #heve:60 #hich:59 #hing:49 #hird:-33 #hold:-28 #hool:52 #hora:-128 #hori:-32 #hort:25 #hose:100
#hour:39 #humo:-53 #hund:-41 #hurs:97 #iado:-39 #ible:198 #ibre:54 #iche:59 #idad:-36 #iday:116 #idea:-39 #iemp:-27
#iend:58 #iene:84 #ient:35 #iera:56 #ierc:131 #iern:86 #iero:-40 #ierr:38 #iest:29 #ight:32 #igua:29 #igue:-43
#igui:25 #ilab:86 #ilad:33 #ille:-34 #imer:51 #inde:36 #ingo:-26 #ings:117 #insp:31 #inst:77 #ione:27 #iper:27
#ired:66 #irmo:-50 #irst:56 #isie:30 #isit:-26 #ismo:48 #itch:-50 #ithe:42 #jaja:-37 #jubi:37 #juev:108 #just:-32
#kend:39 #kids:56 #king:71 #labl:83 #labo:-39 #lace:-36 #lado:42 #lase:25 #lass:30 #late:52 #leas:32 #lega:-40
#lego:29 #legu:-32 #leme:-47 #lets:-26 #leva:44 #libr:55 #lien:62 #lier:75 #like:91 #lled:-33 #lleg:-37 #lose:29
#lqui:167 #lueg:-29 #luga:37 #lune:176 #mana:211 #mand:-26 #mart:121 #marz:-65 #mayb:82 #mbia:-56 #medi:71 #mela:-32
#meno:106 #mera:46 #meti:32 #mier:148 #mind:-90 #mine:-27 #mism:56 #mond:129 #more:-41 #morr:104 #move:-62 #movi:-26
#mpra:61 #mpre:-27 #much:-32 #myse:-35 #nana:75 #navi:-29 #ncel:-67 #nday:62 #ndra:67 #ndre:-46 #nece:43 #neit:36
#nero:-32 #ners:-26 #nesd:62 #nest:88 #neve:67 #next:235 #nfir:-35 #ngan:135 #nged:-31 #ngin:26 #ngos:-29 #nico:37
#nigh:-75 #nine:35 #ning:152 #nito:25 #nner:-29 #noma:25 #none:55 #noon:37 #nspe:31 #nste:64 #ntem:-35 #ntes:88
#ntra:47 #ntre:51 #nyth:124 #ocho:31 #odav:-29 #odri:56 #offi:27 #okin:34 #oles:118 #omas:37 #omes:-47 #omod:28
#omor:108 #onda:134 #oner:61 #ones:94 #onfi:-36 #only:60 #onto:117 #oone:139 #oors:31 #open:61 #oqui:30 #orar:-95
#oras:-41 #orit:-26 #orqu:46 #orro:105 #osib:133 #ossi:79 #osto:-25 #otat:38 #ould:98 #oure:28 #ours:-45 #ovin:-30
#oxim:42 #paci:78 #para:93 #part:-40 #pasa:-30 #pase:-37 #paso:26 #past:26 #peci:-31 #pect:27 #peda:-28 #pend:-81
#peni:102 #pera:-32 #pero:91 #pick:64 #plac:-37 #plea:31 #podr:55 #poqu:27 #porq:44 #posi:120 #poss:80 #pran:52
#prec:-32 #preg:-31 #pren:-29 #pril:34 #prim:46 #pron:153 #prox:43 #pued:297 #puer:-30 #pull:27 #quee:44 #quie:155
#quin:31 #quis:30 #quit:48 #rade:-32 #rado:-60 #rake:50 #rani:28 #rano:32 #rari:-94 #rcol:130 #rday:70 #real:41
#reat:-57 #reci:-32 #regu:-35 #remi:-57 #rend:-29 #reno:-26 #resh:-34 #reti:87 #rgen:-44 #rida:104 #ride:30 #righ:70
#rime:51 #rind:27 #rivi:-25 #rlie:92 #rnes:90 #rong:-60 #ront:147 #rota:43 #roun:50 #roxi:42 #rque:46 #rrad:-69
#rrow:115 #rtes:132 #ruck:34 #saba:161 #said:-26 #sala:-25 #sale:-61 #sali:63 #same:-40 #satu:77 #scan:28 #sche:-46
#scho:52 #scri:-47 #scue:30 #sday:179 #self:-33 #sema:126 #send:-26 #shak:-36 #shes:-34 #shop:-41 #shor:25 #sibl:214
#siem:-26 #sier:29 #sito:38 #smok:31 #soon:172 #soun:-25 #spac:74 #sper:-44 #spue:26 #sque:49 #ssed:-33 #ssib:80
#stan:-68 #stea:56 #ster:-36 #stop:-36 #suit:38 #sund:-45 #swap:-32 #swit:-63 #take:28 #tead:64 #teme:-35 #temp:63
#tend:76 #teng:181 #tera:32 #test:36 #teve:59 #text:-75 #than:-30 #that:29 #then:84 #ther:50 #thin:42 #thos:101
#thur:99 #tien:76 #till:-44 #time:77 #tipo:38 #tire:47 #tmrw:25 #tomo:91 #trae:31 #trai:-25 #tran:26 #truc:35
#tter:67 #tues:168 #turd:77 #twee:52 #ualq:167 #uand:41 #ubil:37 #udge:-29 #ueda:193 #uedo:98 #ueez:39 #uego:-40
#uela:31 #uero:-26 #uesd:99 #ueve:93 #ugar:37 #uier:157 #uisi:30 #uito:59 #uits:26 #unda:-62 #undo:26 #undr:-46
#unes:176 #unos:-44 #unte:-49 #urda:77 #urge:-39 #urno:33 #uste:52 #vail:109 #vean:27 #veni:51 #vers:-27 #very:-56
#vida:-37 #vier:84 #ving:-41 #wedn:62 #weds:39 #week:126 #ween:53 #were:-30 #what:44 #when:116 #whic:61 #whol:-26
#wipe:27 #witc:-63 #with:-32 #work:43 #wron:-60 #xima:32 #xtin:-25 #year:-26 #your:38 #ysel:-35 #ythi:115
%again_later:71 %again_later%agree:60 %again_later%bring:103 %again_later%busy:-57 %again_later%call_off:33
%again_later%car:-43 %again_later%doubt:-102 %again_later%elsewhere:-25 %again_later%fails:38 %again_later%family:42
%again_later%how_long:-26 %again_later%lift:-25 %again_later%money:-30 %again_later%odometer:-70
%again_later%on_way:72 %again_later%opening:89 %again_later%pay_day:-131 %again_later%phone:-64
%again_later%season:-122 %again_later%staff:28 %again_later%wrong_one:33 %agree:25 %agree%bring:-53
%agree%call_off:33 %agree%car_part:27 %agree%elsewhere:49 %agree%fails:35 %agree%family:78 %agree%gone_car:25
%agree%how_long:105 %agree%leave_me:39 %agree%meaning:35 %agree%odometer:76 %agree%opening:46 %agree%pay_day:39
%agree%phone:56 %agree%question:33 %agree%season:50 %agree%smoke_smell:-42 %agree%thanks:36 %agree%wrong_one:87
%away%call_off:-38 %away%car:-39 %away%fails:33 %away%gone_car:32 %away%how_long:28 %away%lift:62 %away%odometer:36
%away%on_way:55 %away%refuse:-34 %bad%machine:28 %bad%shake:29 %bring:89 %bring%call_off:-33 %bring%car:64
%bring%car_part:59 %bring%fails:40 %bring%family:35 %bring%noise:27 %bring%odometer:-43 %bring%on_way:-26
%bring%opening:56 %bring%phone:26 %bring%question:54 %bring%shift_it:-109 %bring%staff:26 %bring%start_again:35
%bring%wrong_one:-25 %busy:73 %busy%call_off:32 %busy%leave_me:51 %busy%meaning:36 %busy%refuse:40 %busy%season:-48
%call_off:-51 %call_off%doubt:38 %call_off%gone_car:-48 %call_off%how_long:58 %call_off%message:-55
%call_off%money:33 %call_off%on_way:25 %call_off%opening:33 %call_off%phone:-53 %call_off%refuse:117
%call_off%season:-96 %call_off%shift_it:72 %call_off%start_again:-39 %call_off%thanks:-31 %call_off%wrong_one:52
%car%gone_car:-49 %car%lift:50 %car%question:-31 %car_part:40 %car_part%do_it:57 %car_part%lift:30 %car_part%money:49
%car_part%noise:34 %car_part%shift_it:44 %do_it:-90 %do_it%how_long:-36 %do_it%on_way:29 %do_it%opening:32
%do_it%question:29 %doubt:-38 %doubt%season:-32 %doubt%shift_it:-62 %elsewhere:-34 %elsewhere%place:45
%elsewhere%question:27 %elsewhere%refuse:32 %elsewhere%shift_it:-25 %elsewhere%wrong_one:-41 %fails%phone:27
%fails%refuse:-39 %fails%start_again:34 %gone_car%phone:47 %gone_car%season:-28 %gone_car%wrong_one:-26 %how_long:149
%how_long%leave_me:45 %how_long%opening:-60 %how_long%pay_day:-32 %how_long%question:-159 %how_long%refuse:42
%how_long%wrong_one:34 %leave_me:56 %leave_me%message:-43 %leave_me%pay_day:41 %leave_me%season:35
%leave_me%shift_it:40 %lift%question:-26 %lift%refuse:36 %machine:55 %machine%meaning:26 %machine%shake:29
%machine%staff:28 %machine%wrong_one:25 %meaning:25 %meaning%question:-77 %meaning%shake:28 %message:-146
%message%on_way:-32 %message%start_again:25 %money:-127 %money%question:47 %money%season:-35 %money%shift_it:-40
%money%smoke_smell:-43 %money%wrong_one:-43 %odometer:37 %odometer%question:27 %on_way:82 %on_way%place:77
%on_way%question:26 %on_way%refuse:30 %on_way%season:26 %on_way%shift_it:34 %opening:-215 %opening%place:-74
%opening%question:-87 %opening%refuse:26 %opening%staff:-73 %opening%wrong_one:61 %pay_day:-75 %pay_day%question:-46
%pay_day%shift_it:-51 %phone:-150 %phone%refuse:72 %phone%shift_it:-29 %place%refuse:45 %place%shift_it:-25
%question%shake:-25 %question%who:-41 %refuse%season:-79 %refuse%shift_it:68 %season:-103 %season%shift_it:-108
%season%start_again:-37 %season%wrong_one:-59 %shake:-56 %shift_it:102 %shift_it%wrong_one:-46 %smoke_smell:-65
%staff:-88 %staff%start_again:29 %staff%wrong_one:-32 %thanks:-59 %who:-64 %wrong_one:-52 @?:71 @after_visit:-152
@car:-130 @confirm:-1182 @confirm_stop:-78 @day:254 @later:-123 @nothing:-418 @odometer:-235 @offers:-358
@offers_:-122 @offers_the_th:-80 @reading:49 @time:281 @times:513 ^_$:-229 ^_a:55 ^_afternoon:-33 ^_all:-34
^_antes:-29 ^_any:204 ^_are:-80 ^_as:54 ^_asap:211 ^_ask:-28 ^_at:48 ^_been:-33 ^_call:-76 ^_can:-29 ^_cancel:-40
^_check:-31 ^_could:37 ^_cual:-71 ^_cualquier:100 ^_cuando:58 ^_cuanto:-47 ^_depende:-46 ^_do:-131 ^_early:30
^_el:-116 ^_end:40 ^_entre:45 ^_es:-64 ^_estan:-72 ^_friday:-99 ^_give:-64 ^_got:53 ^_hableme:-52 ^_hasta:-46
^_have:27 ^_hours:37 ^_how:-85 ^_hoy:63 ^_id:51 ^_idk:-37 ^_in:79 ^_is:-26 ^_it:-25 ^_la:-126 ^_lets:-46 ^_lo:138
^_make:40 ^_manana:48 ^_martes:26 ^_maybe:45 ^_me:-51 ^_mejor:28 ^_mon:33 ^_my:61 ^_neither:37 ^_new:-26 ^_next:137
^_ninguna:34 ^_no:29 ^_none:56 ^_noon:30 ^_not:-37 ^_ok:-33 ^_open:-145 ^_para:-68 ^_please:-27 ^_podria:29 ^_que:-88
^_quiero:38 ^_remind:-56 ^_right:32 ^_sabado:29 ^_sat:76 ^_saturday:47 ^_se:-50 ^_shes:-31 ^_si:-52 ^_stop:-45
^_sunday:45 ^_sure:27 ^_swamped:-26 ^_the:-146 ^_this:40 ^_thursday:-53 ^_tomorrow:56 ^_trabajan:-68 ^_try:-121
^_tues:61 ^_tuesday:35 ^_un:31 ^_una:27 ^_va:25 ^_wed:81 ^_what:-35 ^_when:-30 ^_whenever:139 ^_which:-43
^_whichever:51 ^_will:-30 ^_ya:-37 ^_yeah:42 ^_yo:26 ^_you:-37 a:58 a__hora:107 a__no:25 a__of:25 a__si:30
a__weeks:-41 a__y:41 a_day:-25 a_hole:31 a_la:68 a_las:156 a_monday:37 a_primera:25 a_ring:-52 a_saturday:-28
about:133 abren:-84 abren_$:-79 after:87 after_$:41 after__day:-34 after_that:32 after_work:28 again_on:-27
ahorita:-32 al:41 algo:67 all_day:-31 also:57 am:94 am_y:25 an:149 an__change:29 an_appointment:25 an_hour:26
an_inspection:27 an_oil:28 an_opening:58 and:184 and__need:-34 and_can:32 and_how:30 and_i:-28 and_im:38 and_the:-25
ando:26 antes:92 any:350 any__but:65 any__next:42 any__that:27 any_chance:27 any_day:148 any_of:35 any_time:59
anything:104 anything_$:-31 april:34 are:-95 are__there:-50 are_you:-93 are_your:-52 around:56 around_$:31 as:138
as__as:61 as_of:-43 as_you:59 asap:370 asap_$:175 asi_que:34 ask:-175 ask__after:-34 ask__again:-27 ask_me:-140 at:62
at__it:26 at__so:29 at_and:49 at_instead:-32 at_noon:-38 at_or:-51 at_work:-45 available:86 baby:-30 bad:28 be:144
be_$:29 be_better:35 be_the:37 been:-48 been__to:-48 before:94 before_the:37 better:71 better_$:59 between:51 bien:31
brakes:30 bus:33 but:221 but__it:52 but__me:-26 but_it:-28 but_monday:63 but_the:32 by:69 by_tomorrow:26 caigo:31
call:-78 came:-48 can:264 can__be:60 can__come:48 can__do:135 can__it:61 can__me:59 can__stop:31 can__switch:-38
can_i:25 can_it:45 can_my:-25 can_you:51 cancel:-65 cancel_my:-46 cant_make:-32 car:-41 carro:-29 chance:30
changed_it:-27 check:-47 check__me:-40 check_with:-42 christmas_$:-26 cita_$:-42 cita__favor:30 cita_el:35
cita_para:30 cita_por:30 clock:30 close_$:27 come__friday:36 come__instead:-46 come_at:-26 come_in:28
come_thursday:25 comes:-47 como:25 como__las:43 como_a:33 con:-74 con_el:-26 con_ustedes:-31 confirmo:-50
confirmo_$:-43 cost_and:26 costo:-38 costo_$:-29 could:147 could__do:59 could__it:28 could_do:51 could_you:42
cual:-69 cual__su:-50 cual_es:-53 cualquier:149 cualquier__menos:58 cualquier_dia:113 cuando:32 cuando__el:-25
cuando_lo:-30 cuando_salga:-29 cuanto_se:77 da:32 da_igual:34 day:166 day_$:-81 day_after:63 day_but:55 day_is:36
day_thing:-25 de:75 de__a:54 de__al:28 de__dia:-39 de__el:28 de__la:-25 de__me:36 de__semana:27 de_la:38 de_las:-55
de_los:31 de_manana:-29 de_mes:41 de_paso:25 deal:27 deal_$:32 dejo_en:-40 del_jueves:-53 depende:-45 depends:-25
descanso:25 despues:27 despues_del:37 di:-26 dia:180 dia__el:64 dia_de:39 dia_menos:83 dia_que:33 dias_$:29
digame:-26 digo:-97 digo_$:-70 do:120 do__at:-25 do__guys:-30 do__have:-45 do__instead:35 do__th:50 do_friday:51
do_i:-26 do_instead:96 do_the:41 do_thursday:-27 do_you:-121 does:-26 doesnt_matter:28 domingo_o:34 domingos:-29
domingos_$:-35 doors:31 dos:-35 dos_horas:-32 driving:-25 drop:84 drop_it:41 earlier:75 early:87 easter:-44
easter_$:-45 el:152 el__despues:26 el__en:35 el__hoy:-27 el__pero:30 el__puedo:40 el__que:51 el__sea:36 el__si:40
el_carro:-41 el_de:-32 el_dia:26 el_jueves:59 el_lunes:111 el_martes:78 el_miercoles:71 el_mismo:-40 el_pedal:-25
el_precio:-26 el_sabado:123 el_viernes:28 en__del:-30 en__dias:-40 en__escuela:29 en__manana:-44 en__se:88
en__tarde:64 en_cuanto:72 en_la:44 en_marzo:-39 en_unos:-43 end:44 end__the:47 end_of:58 ends:39 entre:59 era:-29
es:-152 es_$:-25 es__horario:-50 es_de:-36 es_mi:40 es_su:-50 esas:67 escuela:31 ese:37 ese__no:25 ese_dia:48 esos:50
espacio:71 espacio_$:45 esta:-80 estan:-78 estan__el:-71 este_mes:-48 evening:37 every:-48 every_morning:-27
favor_$:-36 filled:-35 filled_it:-30 fin:37 fin__mes:39 fin_de:38 finde:27 finde_$:32 fine_$:-29 first:56
first__of:26 first_week:26 fit:47 fit__in:34 for:105 for__inspection:26 for__oil:48 for_a:25 for_an:66 for_me:68
for_that:-27 for_thursday:-28 free:76 freno:-26 fresh:-34 fri:53 friday:83 friday_$:104 friday_afternoon:-53
friday_but:53 friday_instead:41 friday_is:-40 from:95 from_the:32 get:26 get_my:26 give:-95 give__a:-90 give_me:-92
go:-26 go__friday:-42 go_with:-38 going:27 good:32 got:240 got_$:108 got_a:61 got_anything:81 got_it:-25 great:-52
guy:-56 guys:-62 guys_open:-32 hableme:-43 hableme_por:-40 habra:35 hacer:-28 half:29 has:52 hasta:-77
hasta__hora:-38 hasta_que:-55 have:62 have_an:43 hay:70 hay_$:37 hold:-25 hole:33 hora:27 hora_que:75 horario:-96
horas:-41 hour:77 hours:-38 hours_$:-29 how__is:-32 how_about:69 hoy:75 hoy_$:-37 hoy__la:36 hoy_en:38 hoy_mismo:66
humo:-52 humo_$:-56 hundred:-51 hundred_$:-25 i:-95 i__a:-37 i__at:-56 i__by:32 i__in:40 i__my:-37 i__out:31
i__to:-53 i__you:-37 i_be:-33 i_bring:25 i_stop:29 i_switch:-39 i_work:40 i_would:-29 id:75 idea:-34 idk:-39 if:75
if__is:47 if_i:-48 if_that:26 if_you:48 igual:30 ill:30 ill_be:46 ill_wait:27 im:105 im_retired:53 in:75 in_$:46
in__day:-25 in__the:44 in_friday:50 in_the:-47 in_tomorrow:25 in_two:37 in_your:38 instead:64 instead_$:90 is:76
is_$:-62 is__at:30 is__but:26 is__on:28 is__the:-56 is_better:-57 is_fine:31 is_not:31 is_ok:38 is_shaking:27
is_that:-26 is_the:-81 is_there:40 is_this:-30 is_thursday:27 ish:46 it:-34 it_$:-56 it__at:-28 it__friday:36
it__in:-30 it__on:-32 it_and:39 it_be:60 it_friday:28 it_in:30 it_myself:-29 it_shakes:-54 it_to:-47 jueves:83
jueves_$:-73 jueves__a:57 jueves__la:42 jueves__las:-26 jueves_pero:51 just:-37 just__i:-32 kids:53 la:71 la_$:-31
la__de:42 la__el:51 la__las:-38 la__no:30 la__que:80 la__semana:43 la_cita:-40 la_de:-58 la_del:-43 la_hora:79
la_manana:-45 la_proxima:34 la_semana:56 la_tarde:74 labor:-39 labor_day:-40 las:89 las_$:-92 las__y:28 las_dos:-32
las_no:34 las_y:45 later:68 le:-126 le_caigo:26 le_digo:-71 le_sale:-57 let:-43 let_me:-36 lets:-26 libre:54
libre_$:30 light:29 like:91 like_$:52 llego:29 llego_$:33 llegue:-31 lo:-102 lo__en:-96 lo__pronto:109 lo_dejo:-36
lo_di:-25 lo_llevo:-61 lo_mas:135 lo_tengo:-29 lol:27 long_$:41 look:-25 los:38 los__en:38 luego:-30 lugar:37
lugar_$:49 lunes:176 lunes_a:41 make_it:44 manana:90 manana_$:-34 manana__las:36 manana_a:41 manana_temprano:25
martes:121 martes_$:67 martes__la:28 martes__le:-58 martes_a:25 martes_pero:-48 marzo:-65 marzo_$:-28 mas:158
mas__posible:49 mas__que:54 mas_pronto:120 mas_temprano:-30 matter:25 maybe:82 maybe_next:63 me:-34 me_$:100 me__a:26
me__el:49 me__igual:38 me__on:-27 me__ring:-53 me__the:-35 me__week:-112 me_a:-92 me_after:-69 me_again:-26
me_before:28 me_da:37 me_in:-27 me_next:-109 me_quedan:35 medio:38 medio_dia:27 mejor_$:-29 mejor__lunes:39
mejor_el:60 menos:106 menos__lunes:41 menos_el:60 mi_cita:-38 miercoles:119 min:-29 mind:-33 mis:-38 mismo:57 mon:63
monday:132 monday_$:-31 monday__be:42 monday_at:35 monday_morning:-28 more:-28 morning:-75 morning_$:-76
morning_to:-54 mornings:81 move:-48 move__to:-26 moving:-30 much:-31 my:57 my_number:25 my_shift:25 myself:-35 n:33
navidad:-25 nd:56 necesito:50 necesito_que:28 need:47 needed:-31 neither:36 never:-61 new:-96 new_tires:-33 next:235
next_$:29 next_week:48 ni__ni:25 night:-71 night_$:-49 night_and:-25 nine:31 ninguna:29 no:29 no_$:-86 no__do:41
no__para:61 no__yet:-34 no_but:-45 no_can:42 no_el:69 no_good:30 no_hay:49 no_idea:-33 no_lo:-29 no_se:-57 no_sea:43
no_tiene:54 no_trabajo:35 no_voy:-43 noche:-28 nomas:25 none:55 none__those:42 none_of:38 noon:39 not:-43
not__yet:-29 not_now:-31 not_sure:-35 ocho:31 oclock_$:-29 of:63 of__how:25 of__month:36 of_the:43 of_those:59
off__list:-26 off_the:-26 oil_change:33 ok:30 on:27 on_a:-27 on_friday:49 on_it:29 on_me:29 on_saturday:-27
on_saturdays:-44 on_sunday:-33 on_thursday:31 one:-102 one_$:-111 one__the:27 one_please:-29 only:60 open:-63
open_$:83 opening:81 or:-26 or_$:-66 out:-74 over_$:28 pal:38 para:93 para__de:28 para__sabado:36 para_cuando:46
para_la:49 para_que:-26 paso:26 past:27 pedal:-38 pero:102 pero__las:65 pero_a:74 pero_le:-59 pick:62 place:-27
please:26 pm:58 podria:56 podria_ser:39 poquito:27 por:-42 por__la:27 por__manana:28 por__tarde:41 por_favor:-25
por_la:80 porque:46 posible:134 posible_$:135 possible:67 possible_$:71 primera:44 pronto:117 pronto_posible:49
pronto_que:34 proxima:34 proxima_semana:34 pueda:90 pueda_$:85 puedan:88 puede:35 puede_$:61 puedo:110 puedo__el:26
puedo_el:38 que:54 que__el:29 que__la:-28 que__me:27 que_hora:-57 que_me:37 que_no:40 que_se:28 que_sea:50 que_tal:27
que_tan:-28 que_tengan:38 quedan:26 quiero__el:28 quisiera:30 rd:45 rd_$:49 really:26 remind:-54 remind__in:-44
remind_me:-54 retired:65 retired_$:37 ride:31 right:58 right__you:27 ring:-28 rotation:26 run:60 sabado:164
sabado__las:41 sabado_a:41 said:-26 sale:-49 sale_humo:-59 salga:-34 salgo:26 saliendo:70 saliendo_de:25
saliendo_del:30 same:-34 sat:130 sat_morning:27 saturday:114 saturday_$:36 saturday_hours:-61 saturday_morning:30
saturdays:-38 saturdays_$:-44 schedule:-31 school:51 se:45 se_lo:-45 se_pueda:104 se_puede:57 se_va:-31 sea:106
sea_$:29 semana:125 semana_$:45 set:-37 shakes:-54 shaking:28 shes:-34 shop:-32 shop_$:-29 si:66 si__dejo:-35
si__jueves:-29 si__llevo:-40 si__martes:-50 si_el:-35 si_lo:-75 si_me:40 siempre:-26 sigue:-29 siguiente:26 so:121
sometime:34 soon:32 soon__you:53 soon_as:50 sooner:54 sooner__better:51 sooner_the:51 soonest:86 soy:40 squeeze:39
squeeze__in:38 squeeze_me:38 start:26 stop:-30 stop_$:-53 stop__me:-28 stop_by:32 stop_in:32 su:-39 su_horario:-50
suits:26 sunday:-52 sunday_$:-126 sunday_or:26 switch:-58 switch_to:-36 take:27 take_the:-32 tan:-26 te:-38
te_digo:-25 tempranito:27 ten:69 ten_$:30 tendra:42 tengan:152 tengo_que:-25 text:-45 texting:-25 th:169 th_$:-36
th_is:31 th_so:30 that:30 that_day:91 the:74 the__after:46 the__for:-31 the__guy:-34 the__is:43 the__on:-34
the__one:-81 the__or:38 the__the:106 the__thing:-29 the__to:25 the_am:-45 the_better:117 the_doors:26 the_earlier:60
the_friday:-114 the_kids:26 the_month:39 the_nd:55 the_next:43 the_rd:27 the_school:29 the_sooner:36 the_th:178
the_thursday:-35 the_wrong:-50 then:84 then_$:46 there_on:-41 thing:-88 thing_$:-69 third:-33 this__the:-43
this_is:-48 this_month:-32 this_morning:-31 this_week:38 this_weekend:43 those:101 thurs:79 thurs_$:-25
thursday_$:-35 thursday__it:-29 thursday_works:-42 tiene:40 tiene__el:63 tienen:45 tienen_$:62 till:-39 time_$:-30
tipo:38 tipo_$:26 tmrw:25 to__in:33 to__it:25 to__my:27 to_be:53 to_get:54 to_monday:-50 todavia:-29 today_$:-52
todo:-28 todo__dia:-28 tomorrow:99 tomorrow_$:-30 tomorrow_at:27 trabajan:-90 trabajo:79 trabajo_$:48 truck:33
try:-156 try__in:-31 try_me:-150 tu:-43 tues:69 tuesday:101 turno:34 two:38 two_$:-34 two_hundred:-31 two_weeks:42
un:72 una_cita:42 una_hora:-36 unos:-44 up:-34 use:-25 va_a:-38 van:-28 vez:-38 viernes:91 viernes_$:-48
viernes__de:29 viernes__la:29 viernes__las:-59 viernes_a:-35 viernes_pero:25 voy:-58 voy_a:-36 was:-31 we:-27
we__instead:74 we__it:-54 we_do:34 wed:149 wed_$:25 wed_at:48 wednesday:48 weds:39 week:122 week_$:71 week_after:26
weekend:71 weekend_$:46 weekends:-32 weeks:-54 weeks_$:-40 went:-28 were:-30 what__the:30 what__your:-32
what_about:110 what_are:-60 what_i:-37 whatever:59 when_you:26 whenever:129 whenever_you:76 whichever:59 who:-27
whole:-26 will_it:45 with:-25 with_me:-28 with_the:30 work:33 work_$:37 work__me:-29 works_$:-44 works_but:-38
would__be:-41 would__better:42 would_be:31 would_i:-35 wrong:-60 y:113 y_en:32 ya:-84 ya_casi:30 ya_no:-79 yes_$:-42
yes__works:-44 yet:-106 yet__me:-62 yo:64 you:108 you__a:-36 you__an:54 you__anything:30 you__im:31 you__it:-45
you__my:-35 you__on:-67 you__what:-26 you_can:91 you_close:28 you_do:141 you_got:106 you_guys:-60 you_have:35
you_pick:31 you_see:25 you_there:-44 your__hours:-54 youre:25
"""
