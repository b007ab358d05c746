"""What speaks for and against `propose`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "propose"
BIAS = -194
WEIGHTS = """\
#abad:195 #able:62 #abor:-42 #abou:124 #abra:48 #abre:-92 #abri:24 #acei:25 #acio:100 #acom:26 #adel:-22 #adit:35
#ados:-92 #afte:78 #agai:-38 #ahor:-49 #aila:80 #ajan:-75 #akes:-23 #akin:32 #ales:-32 #alga:-30 #algo:90 #alie:48
#alqu:159 #also:63 #ambi:-82 #amel:-27 #ampe:-30 #anan:82 #ance:-57 #anda:-51 #ando:34 #ange:-29 #anit:31 #anme:-34
#anso:39 #anta:-30 #ante:59 #anyt:172 #apri:38 #aqui:31 #arda:-28 #arde:33 #ario:-118 #arli:96 #arly:65 #aron:-51
#arou:60 #arte:99 #arzo:-52 #asap:384 #asta:-76 #aste:-46 #ater:53 #atev:50 #atur:73 #avai:103 #avia:-32 #avor:-23
#aybe:81 #baby:-28 #bado:180 #baja:-101 #bajo:64 #been:-37 #befo:58 #bett:63 #betw:41 #biar:-48 #bila:33 #blem:-50
#blue:-24 #bout:169 #brak:46 #bran:26 #bren:-97 #caci:26 #call:-76 #camb:-88 #came:-45 #canc:-76 #cans:37 #ceit:25
#cept:28 #cerr:-61 #cesi:38 #ched:-55 #chev:45 #choo:38 #cial:-35 #clas:50 #clos:33 #cobr:-28 #coge:-26 #cole:108
#come:-35 #como:43 #comp:-29 #conf:-41 #cosa:-22 #coul:118 #crac:23 #crib:-48 #ctio:22 #cual:67 #cuan:39 #davi:-32
#dawn:26 #days:-37 #deal:29 #deja:-25 #dela:-32 #deme:-23 #dent:28 #depe:-79 #desc:33 #desp:28 #dias:23 #diga:28
#digo:-112 #ding:29 #dito:27 #dnes:58 #does:-32 #domi:-26 #door:65 #dred:-39 #dria:71 #driv:-24 #drop:93 #dule:-47
#eady:-24 #eall:27 #earl:160 #ease:25 #east:-38 #ecia:-40 #ecio:-33 #ecti:22 #edal:-35 #edan:104 #eded:-35 #edio:53
#edne:63 #edul:-47 #eede:-35 #eeke:30 #eeks:-52 #eeze:45 #efor:58 #egar:-39 #egue:-26 #egun:-26 #eigh:-39 #eite:25
#eith:43 #ekda:24 #eken:30 #elan:-27 #eman:118 #emin:-60 #emos:-38 #empr:42 #ence:-22 #ende:-56 #endo:26 #endr:112
#ener:-26 #enev:125 #enga:123 #enin:139 #enme:-45 #enos:104 #ensa:-44 #entr:65 #epen:-79 #erco:104 #erne:76 #erra:-56
#esas:72 #esca:37 #escr:-44 #esda:151 #esit:38 #esos:62 #espa:61 #espe:-45 #espu:27 #essa:-22 #esta:-135 #esto:36
#etim:28 #etir:79 #ette:68 #etwe:41 #evar:32 #even:53 #ever:103 #eves:73 #exce:22 #ffic:30 #fice:32 #fill:-25
#find:22 #firm:-37 #firs:49 #fore:53 #forg:-32 #free:56 #fres:-23 #frid:128 #from:84 #fter:71 #gain:-38 #gent:-52
#give:-96 #givi:23 #goin:28 #good:35 #grea:-48 #grin:27 #guen:-23 #guie:34 #guna:33 #gunt:-22 #guys:-76 #habl:-48
#habr:40 #hake:-60 #haki:32 #half:31 #hanc:31 #hang:-26 #hank:-26 #hast:-62 #hate:49 #have:108 #heck:-24 #hedu:-47
#hene:125 #heve:45 #hich:47 #hici:-23 #hing:64 #hird:-39 #hirt:23 #hold:-29 #hole:27 #home:30 #hool:37 #hora:-115
#hori:-32 #hose:99 #humo:-52 #hump:51 #hund:-32 #hurs:101 #iado:-22 #ible:195 #ibre:56 #iche:44 #idad:-24 #iday:126
#iend:53 #iene:98 #ient:25 #iera:47 #ierc:120 #iern:72 #iero:-35 #ierr:35 #iest:24 #ight:33 #igue:-45 #igui:28
#ilab:81 #ilad:33 #ille:-24 #imer:25 #imos:-22 #inan:-22 #inde:22 #ingo:-26 #ings:108 #insp:28 #inst:63 #ione:24
#iper:28 #irad:24 #ired:56 #irmo:-52 #irst:49 #irty:22 #isie:30 #isit:-23 #ismo:52 #itch:-55 #iter:22 #ithe:43
#jaja:-26 #jeje:-26 #jubi:33 #juev:97 #just:-41 #kday:24 #kend:30 #kids:59 #king:71 #ksgi:23 #labl:77 #labo:-43
#lace:-38 #lado:39 #lass:29 #late:57 #leas:29 #left:25 #lega:-31 #lego:39 #leme:-47 #leva:47 #libr:57 #lien:38
#lier:80 #like:94 #ling:27 #lled:-36 #llev:36 #lqui:159 #ltim:25 #luga:32 #lune:157 #mana:203 #mand:-44 #mart:114
#marz:-52 #mayb:81 #mbia:-74 #mean:-27 #medi:80 #mela:-37 #meno:100 #mens:-30 #mera:34 #mess:-23 #meti:28 #mier:138
#mina:-26 #mind:-87 #mism:59 #moda:27 #mond:128 #more:-44 #morn:23 #moro:22 #morr:80 #move:-77 #mpra:54 #muev:-22
#myse:-30 #nana:73 #ncel:-75 #nces:23 #nday:65 #ndra:94 #ndre:-39 #nece:31 #need:45 #neit:34 #nero:-34 #ners:-27
#nesd:63 #nest:91 #neve:70 #next:226 #nfir:-37 #ngan:124 #nged:-23 #ngos:-37 #nico:51 #nine:26 #ning:149 #nito:24
#nksg:23 #nner:-32 #none:68 #noon:48 #nsaj:-30 #nspe:28 #nste:49 #ntem:-32 #ntes:81 #ntra:24 #ntre:41 #nuev:-26
#nyth:121 #ocho:26 #odav:-32 #odri:55 #offi:32 #oger:-27 #okin:34 #oles:104 #omas:24 #omes:-41 #omod:31 #omor:100
#once:25 #onda:132 #oner:60 #ones:93 #onfi:-37 #only:56 #onta:24 #onto:89 #oone:147 #oors:55 #open:56 #oqui:32
#orar:-108 #oras:-29 #orit:-26 #orqu:41 #orro:82 #osib:142 #ossi:71 #otat:36 #ould:109 #ound:32 #oupo:-28 #ours:-47
#ovin:-25 #oxim:42 #paci:70 #para:107 #part:-38 #pasa:-56 #pase:-33 #paso:29 #peci:-31 #pect:29 #peda:-36 #pend:-88
#peni:94 #pera:-25 #pero:108 #pick:52 #ping:24 #plac:-40 #plea:24 #podr:55 #pons:-27 #poqu:28 #porq:39 #posi:140
#poss:72 #pped:-23 #pran:45 #prec:-33 #preg:-22 #pren:-23 #pril:35 #prim:23 #pron:127 #prox:42 #pued:263 #pull:22
#quee:56 #quie:145 #quis:30 #quit:38 #raba:-26 #rade:-35 #rado:-53 #rake:46 #rani:26 #rari:-108 #rato:-22 #rcol:119
#rday:64 #read:-32 #real:35 #reat:-51 #rece:-23 #reci:-34 #reco:-24 #regu:-32 #remi:-60 #rend:-23 #reti:79 #rgen:-47
#rida:127 #ride:28 #righ:40 #rime:25 #rind:27 #rivi:-22 #rlie:96 #rnes:77 #rong:-53 #ront:124 #rota:42 #roun:55
#roxi:42 #rque:43 #rrad:-73 #rrar:23 #rrow:80 #rtes:111 #ruck:28 #saba:195 #said:-30 #saje:-30 #sala:-26 #sale:-62
#sali:40 #same:-42 #sand:-24 #satu:72 #scan:42 #sche:-47 #scho:37 #scri:-49 #sday:167 #self:-27 #sema:122 #send:-24
#sgiv:23 #shak:-28 #shes:-30 #shop:-43 #shou:-23 #sibl:214 #sier:30 #sito:38 #smok:26 #sold:32 #soon:152 #spac:66
#sper:-34 #spue:27 #sque:53 #ssag:-22 #ssed:-34 #ssib:72 #stan:-83 #stea:46 #sted:38 #ster:-57 #stop:-31 #sund:-63
#swap:-28 #swit:-70 #tead:49 #tede:22 #teme:-32 #temp:58 #tend:108 #teng:145 #test:25 #teve:50 #text:-86 #than:-50
#then:76 #ther:32 #thin:56 #this:-30 #thos:99 #thur:104 #tien:111 #till:-47 #time:76 #tipo:34 #tira:34 #tire:37
#tmrw:37 #todo:-36 #tomo:83 #trab:-24 #trad:-26 #trae:29 #trip:27 #truc:29 #tter:50 #ttin:22 #tues:171 #turd:72
#twee:41 #ualq:159 #uand:41 #ubil:33 #ueda:174 #uedo:85 #ueez:50 #uego:-35 #uesd:88 #ueve:80 #uevo:-23 #ugar:32
#uier:155 #uisi:30 #uito:51 #ulti:25 #unda:-65 #undr:-39 #unes:157 #unic:35 #unos:-44 #unte:-46 #urda:72 #urge:-43
#urno:33 #uste:51 #vail:103 #varl:25 #veni:51 #very:-54 #vier:56 #ving:-31 #wapp:-22 #wedn:63 #weds:42 #week:105
#ween:42 #went:-26 #were:-23 #what:33 #when:107 #whic:48 #wifi:-31 #wipe:27 #witc:-70 #with:-36 #work:56 #wron:-53
#xcep:22 #xima:29 #year:-27 #your:36 #ysel:-30 #ythi:113 %again_later:45 %again_later%agree:25 %again_later%bring:110
%again_later%busy:-51 %again_later%call_off:43 %again_later%car:-37 %again_later%doubt:-94 %again_later%lift:-27
%again_later%message:-22 %again_later%money:-39 %again_later%odometer:-75 %again_later%on_way:52
%again_later%opening:72 %again_later%pay_day:-110 %again_later%phone:-65 %again_later%place:-26
%again_later%refuse:30 %again_later%season:-103 %again_later%start_again:-28 %agree%call_off:54 %agree%car_part:45
%agree%elsewhere:39 %agree%fails:22 %agree%family:70 %agree%how_long:125 %agree%leave_me:40 %agree%machine:27
%agree%meaning:34 %agree%odometer:73 %agree%on_way:35 %agree%opening:30 %agree%pay_day:33 %agree%phone:41
%agree%question:44 %agree%season:48 %agree%shift_it:61 %agree%smoke_smell:-41 %agree%start_again:-36
%agree%wrong_one:96 %away:-41 %away%call_off:-28 %away%car:-35 %away%gone_car:28 %away%how_long:27 %away%leave_me:24
%away%lift:68 %away%on_way:44 %away%opening:23 %away%shift_it:-30 %bad%machine:29 %bad%meaning:23 %bad%shake:30
%bring:127 %bring%car:59 %bring%car_part:76 %bring%fails:36 %bring%family:24 %bring%how_long:25 %bring%noise:33
%bring%odometer:-48 %bring%on_way:-46 %bring%opening:50 %bring%phone:30 %bring%question:71 %bring%shift_it:-115
%bring%staff:29 %bring%start_again:43 %busy:55 %busy%call_off:33 %busy%leave_me:60 %busy%refuse:41 %busy%season:-40
%call_off%doubt:34 %call_off%elsewhere:33 %call_off%family:27 %call_off%gone_car:-38 %call_off%how_long:60
%call_off%lift:25 %call_off%message:-32 %call_off%money:32 %call_off%on_way:40 %call_off%opening:34
%call_off%pay_day:-32 %call_off%phone:-47 %call_off%question:22 %call_off%refuse:140 %call_off%season:-89
%call_off%shift_it:60 %call_off%start_again:-32 %call_off%thanks:-27 %call_off%who:-26 %call_off%wrong_one:48
%car%car_part:30 %car%gone_car:-41 %car%lift:49 %car%question:-34 %car_part:59 %car_part%do_it:49
%car_part%elsewhere:26 %car_part%money:48 %car_part%noise:43 %car_part%opening:25 %car_part%place:27
%car_part%refuse:26 %car_part%shift_it:42 %car_part%start_again:22 %do_it:-109 %do_it%how_long:-50 %do_it%on_way:25
%do_it%opening:28 %do_it%pay_day:-36 %do_it%season:-47 %doubt:-48 %doubt%phone:22 %doubt%question:22
%doubt%season:-38 %doubt%shift_it:-58 %elsewhere:-47 %elsewhere%place:31 %elsewhere%refuse:37
%elsewhere%wrong_one:-33 %fails:25 %fails%phone:26 %fails%refuse:-44 %fails%smoke_smell:22 %fails%start_again:22
%family%odometer:-36 %family%question:-37 %gone_car:-22 %gone_car%phone:37 %gone_car%season:-33 %how_long:125
%how_long%leave_me:46 %how_long%money:-23 %how_long%opening:-78 %how_long%pay_day:-41 %how_long%question:-142
%how_long%refuse:57 %how_long%staff:-22 %how_long%wrong_one:26 %leave_me:32 %leave_me%message:-39
%leave_me%pay_day:42 %leave_me%season:38 %leave_me%shift_it:33 %leave_me%smoke_smell:24 %leave_me%start_again:-24
%lift%on_way:27 %lift%opening:22 %lift%refuse:51 %machine:23 %machine%meaning:27 %machine%shake:30
%machine%wrong_one:23 %meaning%question:-79 %meaning%shake:30 %message:-170 %message%on_way:-41 %money:-136
%money%question:50 %money%refuse:-23 %money%season:-32 %money%shift_it:-30 %money%smoke_smell:-43
%money%wrong_one:-38 %noise:24 %odometer:27 %odometer%shift_it:-28 %on_way:49 %on_way%place:78 %on_way%season:28
%on_way%shift_it:44 %on_way%thanks:26 %opening:-218 %opening%place:-84 %opening%question:-102 %opening%refuse:27
%opening%staff:-67 %opening%wrong_one:48 %pay_day:-99 %pay_day%question:-34 %pay_day%refuse:-34 %pay_day%season:-22
%pay_day%shift_it:-37 %phone:-162 %phone%question:-29 %phone%refuse:76 %phone%shift_it:-26 %phone%staff:-40
%place%question:23 %place%refuse:26 %place%season:26 %question%refuse:36 %question%season:-34 %question%who:-53
%refuse:35 %refuse%season:-77 %refuse%shift_it:69 %refuse%thanks:-24 %refuse%wrong_one:23 %season:-112
%season%shift_it:-98 %season%start_again:-27 %season%thanks:-23 %season%wrong_one:-57 %shake:-38 %shift_it:101
%shift_it%wrong_one:-48 %smoke_smell:-48 %staff:-118 %staff%start_again:29 %staff%wrong_one:-28 %thanks:-71 %who:-82
%wrong_one:-32 @?:106 @after_visit:-174 @car:-85 @confirm:-1126 @confirm_stop:-64 @day:254 @later:-143 @nothing:-411
@odometer:-204 @offers:-264 @offers_:-128 @offers_the_th:-83 @reading:62 @time:380 @times:414 @walk_in:26 ^_$:-202
^_a:60 ^_after:-23 ^_afternoon:-36 ^_all:-44 ^_antes:-38 ^_any:197 ^_apunteme:-25 ^_are:-62 ^_as:44 ^_asap:212
^_ask:-27 ^_blue:-22 ^_call:-79 ^_cancel:-37 ^_changed:-22 ^_check:-30 ^_could:43 ^_cual:-80 ^_cualquier:100
^_cuando:77 ^_cuanto:-50 ^_day:22 ^_de:31 ^_depende:-57 ^_do:-124 ^_early:31 ^_el:-71 ^_end:39 ^_entre:35 ^_es:-47
^_estan:-79 ^_este:27 ^_friday:-83 ^_give:-68 ^_got:58 ^_hableme:-54 ^_half:27 ^_hasta:-38 ^_how:-61 ^_hoy:71 ^_id:51
^_idk:-39 ^_in:65 ^_it:-33 ^_la:-132 ^_late:24 ^_lets:-42 ^_lo:136 ^_make:41 ^_manana:31 ^_martes:28 ^_maybe:31
^_me:-42 ^_mejor:30 ^_miercoles:35 ^_mon:41 ^_mornings:22 ^_muy:-30 ^_my:58 ^_neither:34 ^_new:-27 ^_next:132
^_ninguna:41 ^_no:53 ^_none:69 ^_noon:25 ^_ok:-39 ^_para:-74 ^_please:-27 ^_podria:30 ^_por:-22 ^_prefiero:-23
^_puedo:25 ^_que:-83 ^_quiero:37 ^_remind:-60 ^_right:23 ^_sat:66 ^_saturday:40 ^_se:-45 ^_shes:-26 ^_si:-46
^_stop:-55 ^_sunday:49 ^_sure:28 ^_the:-128 ^_this:37 ^_thursday:-64 ^_tienen:-23 ^_todavia:-23 ^_today:30
^_tomorrow:43 ^_trabajan:-59 ^_try:-133 ^_tues:68 ^_tuesday:39 ^_un:32 ^_una:42 ^_wed:82 ^_what:-33 ^_whatever:23
^_whenever:136 ^_which:-39 ^_whichever:38 ^_who:-22 ^_will:-26 ^_works:-23 ^_ya:-41 ^_yes:35 ^_yo:28 ^_you:-30 a:81
a__hora:103 a__in:22 a__no:26 a__si:24 a__weeks:-36 a__y:33 a_la:72 a_las:138 a_lunch:-33 a_primera:23 a_ring:-52
a_saturday:-31 about:125 abran:23 abren:-97 abren_$:-97 aceite:26 after:74 after_$:64 after__day:-33 after_work:32
again:-38 again_on:-25 ahorita:-31 al:24 algo:81 all_day:-45 also:63 also__you:23 am:100 am_and:22 am_y:23 an:139
an__change:22 an_appointment:23 an_inspection:27 an_opening:60 and:158 and__have:23 and__is:34 and__need:-33
and_can:32 and_how:35 and_i:-31 and_im:31 and_is:22 and_we:26 anda:-34 ano:-26 antes:83 any:339 any__but:68
any__next:37 any__that:28 any__those:25 any_chance:26 any_day:148 any_of:36 any_time:56 anything:99 anything_$:-30
april:35 apunteme:-25 aqui:25 are:-96 are__there:-39 are_you:-87 are_your:-55 around:63 around_$:31 as:79 as__as:49
as_of:-35 asap:384 asap_$:187 ask:-168 ask__again:-27 ask_me:-135 at__it:29 at_and:46 at_instead:-39 at_noon:-23
at_or:-48 at_work:-44 available:81 baby:-28 bad:23 be:134 be_$:35 be_best:-24 be_better:36 be_done:-27 be_the:42
been:-37 been__to:-36 before:58 before_you:24 best_$:-22 better:63 better_$:58 between:40 blue:-24 bout:45 box:22
brakes:26 but:232 but__is:27 but__it:55 but_it:-30 but_monday:65 but_the:35 by:55 by_tomorrow:27 call:-76 call_me:27
cambiar:-29 came:-39 can:256 can__be:52 can__bring:24 can__come:36 can__do:137 can__it:54 can__me:34 can__stop:34
can__switch:-42 can_i:35 can_it:37 can_you:67 cancel:-54 cancel_my:-37 cant_make:-37 car:-47 carro:-25 chance:31
change_$:24 changed_it:-27 check:-41 check__me:-39 check_with:-41 christmas_$:-26 cita_$:-41 cita__el:25
cita__favor:32 cita_el:30 cita_para:30 cita_por:32 close_$:31 come__friday:33 come__instead:-53 come_at:-30
come_in:27 come_thursday:28 comes:-41 como_a:28 con:-75 con_el:-25 con_ustedes:-24 confirmo:-52 confirmo_$:-43
cost_and:26 costo:-33 costo_$:-22 could:130 could__be:24 could__do:52 could__it:24 could_do:27 could_it:24
could_you:46 crack:28 crack_of:28 cual:-84 cual__su:-59 cual_es:-61 cualquier:153 cualquier__menos:59
cualquier_dia:119 cuando:33 cuando__el:-26 cuando_lo:-36 cuando_salga:-25 cuanto_se:84 da:33 da_igual:25 dan:-28
dawn:26 day:200 day_$:-39 day_after:53 day_but:56 day_is:44 de__a:52 de__dia:-31 de__dos:-31 de__me:30 de__semana:25
de__y:-22 de_aqui:27 de_esas:26 de_las:-55 de_manana:-49 de_mes:41 deal:30 deal_$:35 del:-40 del_jueves:-56
depende:-56 depends:-23 descanso:39 despues:28 despues_$:-22 despues_del:29 dia:190 dia__el:64 dia_libre:30
dia_menos:86 dia_no:22 dias:23 dias_$:28 did:-22 digan:25 digo:-112 digo_$:-73 do:118 do__at:-25 do__guys:-33
do__have:-37 do__instead:36 do__th:44 do__work:-27 do_friday:47 do_instead:92 do_thursday:-33 do_you:-103 does:-24
domingo_o:36 domingos:-37 domingos_$:-37 done_in:-23 doors:55 driving:-22 drop:84 drop__at:22 drop_it:38 earlier:80
early:63 easter:-41 easter_$:-42 el:159 el__despues:26 el__en:48 el__es:35 el__pasado:-55 el__pero:27 el__puedo:41
el__que:43 el__si:37 el__temprano:22 el_carro:-26 el_de:-25 el_jueves:54 el_lunes:112 el_martes:77 el_mes:-45
el_miercoles:53 el_mismo:-41 el_pedal:-22 el_precio:-26 el_sabado:161 en__del:-30 en__dias:-40 en__manana:-23
en__se:94 en__tarde:59 en_cuanto:91 en_el:-49 en_la:44 en_las:-24 en_marzo:-36 en_unos:-43 end:43 end_$:-27
end__the:46 end_of:58 ends:32 entre:58 entre_semana:27 era:-27 es:-114 es_$:-31 es__horario:-59 es_mi:68 es_su:-59
esas:72 ese:32 ese__no:29 ese_dia:60 eso:22 esos:57 espacio:66 espacio_$:44 esta:-61 estan:-90 este:26 este_mes:-27
evening:39 every:-44 every_morning:-25 except:22 favor:-23 favor_$:-36 filled:-24 fin:52 fin__mes:38 fin_de:35
fine_$:-24 fine_but:22 first:49 first__of:27 first_thing:28 first_week:27 fit:39 fit__in:27 for:99 for__oil:45
for_an:73 for_me:78 for_that:-22 free:62 fri:59 friday:110 friday_$:80 friday_afternoon:-52 friday_but:53
friday_instead:43 friday_is:-44 friday_morning:28 from:84 from_the:27 get_it:-23 get_my:26 give:-96 give__a:-86
give_me:-92 go:-23 go__friday:-41 go_with:-36 going:28 going_to:22 good:35 good_$:-22 good__me:23 got:239 got_$:98
got_a:79 got_anything:74 got_it:-22 got_to:-22 great:-47 guy:-50 guys:-68 guys_open:-29 hableme:-44 hableme_por:-41
habra:35 hacer:-28 half:31 has:46 hasta:-62 hasta__hora:-29 hasta_que:-47 have:82 have_an:44 hay:81 hay_$:37 hijo:-23
hold:-28 home:30 hora:38 hora_estan:-22 hora_que:81 horario:-105 horas:-29 hour:52 hours:-47 hours_$:-22 how:33
how__are:-25 how__hours:25 how__is:-28 how_about:67 how_bout:46 how_late:-31 hoy:70 hoy_$:-27 hoy__de:25 hoy__la:27
hoy__si:23 hoy_en:28 hoy_mismo:65 humo:-52 humo_$:-58 hundred:-45 hundred_$:-30 i:-71 i__a:-33 i__at:-59 i__by:37
i__from:23 i__in:50 i__to:-60 i__you:-36 i_be:-22 i_bring:33 i_get:-26 i_stop:36 i_switch:-43 i_work:40 i_would:-25
id:69 idea:-30 idk:-41 if:84 if__is:35 if_i:-29 if_that:22 if_you:50 igual:22 ill:60 ill_be:40 ill_stop:26
ill_wait:28 im:82 im__the:29 im_not:-22 im_retired:42 in:97 in_$:43 in__day:-22 in__the:45 in_a:-23 in_friday:47
in_the:-35 in_tomorrow:25 in_two:28 in_your:32 instead:49 instead_$:78 is:68 is_$:-59 is__an:-25 is__at:39 is__but:28
is__ok:24 is__on:24 is__the:-48 is_better:-62 is_fine:38 is_in:-23 is_not:26 is_ok:39 is_on:-25 is_shaking:28
is_the:-78 is_there:44 is_this:-43 is_your:28 ish:28 it:-58 it_$:-77 it__and:32 it__at:-40 it__by:24 it__done:-24
it__friday:39 it__in:-29 it__on:-28 it_and:48 it_be:51 it_friday:22 it_in:31 it_is:-29 it_myself:-25 it_to:-47
it_would:23 jaja_$:26 jueves:73 jueves_$:-75 jueves__a:59 jueves__la:43 jueves__las:-29 jueves_a:-25 jueves_en:24
jueves_pero:55 just:-47 kids:59 know:-29 la:72 la_$:-39 la__de:28 la__el:38 la__las:-36 la__que:92 la__semana:37
la_cita:-48 la_de:-60 la_del:-32 la_hora:81 la_proxima:31 la_semana:40 la_tarde:75 labor:-43 labor_day:-45 las:98
las_$:-85 las__que:25 las__y:31 las_mil:-24 las_no:32 las_y:37 late__you:-28 late_are:-26 later:62 le:-144
le_digo:-75 le_sale:-59 left:25 les:-26 let:-42 let_me:-34 libre:56 libre_$:41 light:25 like:95 like_$:53 llego:39
llego_$:27 lo:-93 lo__a:-26 lo__el:-36 lo__en:-72 lo__pronto:108 lo_dejo:-30 lo_llevo:-49 lo_mas:127 lo_tengo:-25
lol:29 long_$:42 look:-35 los__en:28 los_domingos:-24 luego:-22 lugar:32 lugar_$:48 lunch:-27 lunes:150 lunes__las:24
lunes_a:34 make_it:47 manana:89 manana__la:37 manana__las:37 manana_a:36 manana_temprano:23 many_hours:25 march:27
martes:114 martes_$:50 martes__la:28 martes__le:-59 martes_a:28 martes_pero:-50 marzo:-52 mas:141 mas__posible:52
mas__que:51 mas_pronto:107 mas_temprano:-39 maybe:81 maybe_$:23 maybe_next:58 me:-91 me_$:115 me__el:51 me__igual:30
me__im:-23 me__on:-26 me__ring:-53 me__the:-30 me__week:-124 me__yo:22 me_a:-88 me_after:-72 me_again:-31 me_back:22
me_da:38 me_in:-38 me_next:-120 media:29 media_$:23 medio:47 medio_dia:34 mejor_$:-30 mejor__lunes:39 mejor_el:55
menos:100 menos__lunes:45 menos_el:60 mes:-27 mes_pasado:-43 mi_cita:-37 mi_hijo:-23 mi_turno:27 miercoles:109
mil:-26 mil_$:-24 mind:-27 mis:-31 mismo:62 mon:77 mon__tues:25 mon_or:29 monday:136 monday__be:43 monday_at:37
monday_morning:-36 more:-30 morning:-70 morning_$:-88 mornings:76 move:-52 move__to:-28 moving:-25 much:-25 muy:-24
my:63 my__changed:22 my_number:26 my_shift:30 myself:-30 n:23 nd:58 near_the:-22 necesito:38 necesito_que:29 need:73
need__back:23 need_a:26 needed:-35 neither:34 never:-55 new:-90 new_tires:-34 next:226 next_week:24 ni__ni:29
night_$:-34 nine:26 ningun:-23 ninguna:34 no:39 no_$:-108 no__do:42 no__hoy:24 no__para:119 no__yet:-30 no_but:-43
no_can:43 no_el:79 no_good:32 no_hay:49 no_idea:-28 no_lo:-25 no_quiero:-30 no_se:-51 no_tiene:115 no_voy:-44 none:68
none__those:38 none_of:37 noon:42 not:-22 not__yet:-30 not_now:-31 not_sure:-32 ocho:26 oclock_$:-26 of:91
of__month:38 of_the:53 of_them:27 of_those:55 off:62 off_$:25 office:23 office_$:26 oil_change:23 ok:24 on:26
on__it:22 on_a:-34 on_friday:45 on_it:34 on_me:31 on_saturday:-28 on_saturdays:-38 on_sunday:-27 on_the:23
on_thursday:29 one:-101 one_$:-105 one_please:-27 only:56 open:-61 open_$:89 opening:75 or:-31 or_$:-64 or_tues:25
out:-110 over_$:27 para:96 para__de:29 para__lo:-32 para__sabado:100 para_cuando:37 para_el:22 para_la:34
para_que:-30 pasado:-22 pasado_$:-30 pasado_manana:32 paso:29 past:22 pedal:-34 pero:114 pero__las:64 pero_a:72
pero_el:23 pero_le:-61 pick:58 place:-26 please:24 please_$:32 pm:72 podria:56 podria_ser:37 poquito:28 por__la:29
por__manana:34 por__tarde:45 por_ahi:23 por_favor:-26 por_la:88 porque:41 posible:142 posible_$:145 possible:55
possible_$:61 precio:-23 precio_$:-24 primera:32 pronto:89 proxima:31 proxima_semana:31 pueda:97 pueda_$:90 puedan:79
puede_$:61 puedo:96 puedo_el:34 que:33 que__el:28 que__me:35 que_hora:-54 que_me:41 que_sea:22 que_sigue:-25
que_tal:31 que_tan:-24 que_tengan:28 queda:-28 quiero__el:34 quiero_ir:25 quisiera:30 rd:46 rd_$:52 really:27
remind:-57 remind__in:-44 remind_me:-57 retired:55 retired_$:40 ride:29 right:40 right__you:23 ring:-36 road:24
road_trip:24 room:26 rotation:23 run:43 run_me:22 sabado:201 sabado_$:55 sabado__las:34 sabado_a:35 said:-30 sale:-48
sale_humo:-61 salga:-30 saliendo:50 same:-35 same_day:-30 same_time:-23 sat:130 sat_morning:28 saturday:105
saturday_$:24 saturday_hours:-36 saturday_morning:27 saturdays:-33 saturdays_$:-36 schedule:-33 school:37 se:46
se_lo:-32 se_puede:50 se_va:-24 sea:24 semana:103 semana_$:38 semana_de:26 ser_el:24 set:-30 shakes:-59 shaking:32
shes:-30 shop:-33 shop_$:-33 si:95 si__dejo:-29 si__jueves:-28 si__llevo:-28 si__martes:-50 si_el:-44 si_gracias:26
si_hay:23 si_lo:-60 si_me:26 si_puedo:29 sigue:-30 siguiente:29 sin:-26 so:94 sold:32 sometime:29 sooner:59
sooner__better:44 sooner_the:44 soonest:88 soy:34 squeeze:50 squeeze__in:49 squeeze_me:49 stop:-26 stop_$:-58
stop__me:-26 stop_by:37 stop_in:33 su:-58 su_horario:-59 sunday:-57 sunday_$:-128 sunday_or:30 swapped:-22 switch:-64
switch_to:-40 take_the:-27 tal:28 tan:-37 te:-24 te_digo:-26 tempranito:26 tendra:60 tengan:145 tengo_que:-26
text:-57 th:170 th_$:-40 th_is:36 th_so:35 than:-23 thanksgiving:23 thanksgiving_$:23 that__not:25 that_day:95
the:115 the__after:65 the__for:-25 the__guy:-31 the__in:31 the__is:32 the__on:-38 the__one:-68 the__or:41 the__so:25
the__the:102 the__thing:-31 the_am:-41 the_better:110 the_doors:50 the_earlier:65 the_friday:-101 the_kids:31
the_month:42 the_morning:-30 the_nd:57 the_next:47 the_rd:27 the_sooner:27 the_th:176 the_thing:-22 the_thursday:-26
the_week:35 the_wrong:-42 then:76 then_$:57 there_on:-44 thing:-84 thing_$:-71 third:-39 thirty:22 this:-30
this__the:-44 this_is:-48 this_month:-31 this_morning:-29 this_week:31 this_weekend:42 those:99 thousand__hundred:-23
thurs:87 thurs_$:-30 thursday_$:-33 thursday__it:-25 thursday_and:23 thursday_at:22 thursday_what:25
thursday_works:-43 tiene:93 tienen_$:50 tienen__de:-25 till:-37 time_$:-26 tipo:34 tipo_$:23 tmrw:37 to:-50 to__in:31
to__it:28 to__my:34 to_be:36 to_call:-22 to_friday:-23 to_get:52 to_monday:-55 todavia:-32 todavia_no:-24 today_$:-44
todo:-41 tomorrow:91 tomorrow_$:-24 tomorrow_at:30 too:-36 trabajan:-79 trabajo:61 trabajo_$:40 trae:22 trip:24
truck:29 try:-166 try__in:-31 try_me:-161 tues:83 tues_$:24 tuesday:91 turno:36 two:31 two_weeks:33 ultima:24 un:60
un_dia:-25 una:24 una_cita:43 una_hora:-23 unico:36 unos:-44 urgent:-24 urgente:-23 usted:24 ustedes:22 va_a:-39
vez:-27 viernes:66 viernes_$:-56 viernes__de:29 viernes__la:36 viernes__las:-55 viernes_a:-36 viernes_pero:25 voy:-55
voy_a:-39 was:-31 we__instead:71 we__it:-58 we_do:33 wed:155 wed_$:27 wed_at:49 wednesday:44 weds:42 week:105
week_$:63 week_after:28 weekend:52 weekend_$:37 weekends:-22 weeks:-51 weeks_$:-43 went:-30 were:-23 what_$:-22
what__it:24 what__the:37 what__your:-27 what_about:116 what_are:-63 what_i:-38 what_time:-30 whatever:50 when_you:28
whenever:125 whenever_you:81 whichever:44 who:-31 why_not:23 wifi:-31 wifi_$:-30 will_it:41 with:-30 with_me:-26
with_the:32 wk:25 work:35 work_$:43 work__me:-25 works_$:-37 works_but:-41 would__be:-38 would__better:40
would__to:26 would_be:30 would_i:-25 wrong:-53 y:118 y_el:25 y_en:32 y_media:27 ya:-68 ya_casi:26 ya_no:-71 year:-24
yes_$:-48 yes__works:-47 yet:-102 yet__me:-65 yo:48 you:120 you__a:-31 you__an:56 you__anything:28 you__im:34
you__it:-42 you__me:39 you__my:-34 you__on:-60 you__the:34 you__what:-27 you_can:70 you_close:32 you_do:142
you_got:102 you_guys:-67 you_have:40 you_pick:35 you_there:-35 you_work:-27 your__hours:-51 youve_got:24
"""
