"""What speaks for and against `propose`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "propose"
BIAS = -180
WEIGHTS = """\
#abad:150 #able:43 #abor:-30 #abou:85 #abra:38 #abre:-66 #abri:18 #acei:19 #acio:77 #acom:18 #adit:29 #ados:-64
#afte:74 #agai:-29 #ahor:-39 #aila:55 #ajan:-56 #akin:24 #ales:-26 #alga:-23 #algo:71 #alie:39 #alqu:129 #also:49
#ambi:-66 #amel:-22 #ampe:-21 #anan:67 #ance:-49 #anda:-39 #ando:34 #ange:-26 #anit:23 #anme:-27 #anso:27 #anta:-25
#ante:50 #anyt:130 #apri:28 #aqui:25 #arda:-21 #arde:23 #ario:-87 #arli:69 #arly:51 #aron:-41 #arou:47 #arte:81
#arzo:-40 #asap:292 #asta:-56 #aste:-35 #ater:37 #atev:39 #atur:57 #avai:74 #avia:-27 #aybe:59 #baby:-20 #bado:138
#baja:-77 #bajo:50 #been:-28 #befo:45 #bett:46 #betw:33 #biar:-39 #bila:27 #blem:-36 #blue:-21 #bout:119 #brak:36
#bran:22 #bren:-70 #caci:21 #call:-52 #camb:-71 #came:-37 #canc:-65 #cans:25 #ceit:19 #cept:24 #cerr:-39 #cesi:29
#ched:-43 #chev:36 #choo:30 #cial:-27 #clas:39 #clos:27 #cobr:-22 #coge:-20 #cole:84 #como:29 #comp:-25 #conf:-29
#cost:-19 #coul:90 #crac:19 #crib:-40 #cual:63 #cuan:36 #davi:-27 #dawn:21 #days:-34 #deal:22 #deja:-19 #dela:-24
#deme:-20 #dent:22 #depe:-63 #desc:23 #desp:31 #dias:22 #diga:23 #digo:-85 #ding:20 #dito:22 #dnes:43 #does:-26
#door:52 #dred:-32 #dria:55 #driv:-19 #drop:70 #dule:-36 #eady:-18 #eall:19 #earl:119 #east:-28 #ecia:-32 #ecio:-25
#edal:-24 #edan:78 #eded:-24 #edio:41 #edne:47 #edul:-36 #eede:-24 #eeke:22 #eeks:-33 #eeze:34 #efor:45 #egar:-31
#egue:-20 #egun:-22 #eigh:-32 #eite:19 #eith:26 #ekda:20 #eken:22 #elan:-20 #eman:92 #emin:-41 #emos:-31 #empr:34
#ence:-18 #ende:-45 #endo:21 #endr:87 #ener:-21 #enev:99 #enga:93 #enin:106 #enme:-36 #enos:88 #ensa:-34 #entr:47
#epen:-63 #erco:80 #erne:53 #eron:-18 #erra:-35 #esas:55 #esca:25 #escr:-36 #esda:118 #esit:29 #esos:48 #espa:45
#espe:-32 #espu:30 #essa:-20 #esta:-101 #esto:28 #etim:23 #etir:64 #ette:50 #etwe:33 #evar:27 #even:41 #ever:86
#eves:55 #exce:18 #ffic:23 #fice:25 #fill:-19 #firm:-25 #firs:38 #fore:41 #forg:-28 #free:44 #fres:-19 #frid:101
#from:64 #fter:69 #gain:-29 #gent:-41 #give:-71 #givi:18 #goin:18 #good:22 #grea:-33 #grin:20 #guie:26 #guna:25
#gunt:-18 #guys:-56 #habl:-37 #habr:31 #hake:-40 #haki:23 #half:24 #hanc:26 #hang:-23 #hank:-25 #hast:-47 #hate:39
#have:93 #hedu:-36 #hene:99 #heve:36 #hich:38 #hici:-18 #hing:49 #hird:-26 #hirt:19 #hold:-24 #hole:22 #home:22
#hool:29 #hora:-87 #hori:-26 #hose:71 #humo:-35 #hump:42 #hund:-26 #hurs:86 #iado:-18 #ible:152 #ibre:42 #iche:36
#idad:-19 #iday:99 #iemp:-18 #iend:42 #iene:74 #ient:20 #iera:37 #ierc:94 #iern:50 #iero:-29 #ierr:29 #iest:19
#ight:28 #igue:-35 #igui:22 #ilab:55 #ilad:27 #ille:-19 #imer:20 #inan:-18 #ings:78 #insp:22 #inst:39 #ione:18
#iper:22 #irad:19 #ired:45 #irmo:-37 #irst:38 #isie:25 #isit:-19 #ismo:41 #itch:-38 #iter:18 #ithe:26 #jaja:-20
#jeje:-22 #jubi:27 #juev:76 #just:-31 #kday:20 #keep:-18 #kend:22 #kids:44 #king:53 #ksgi:18 #labl:52 #labo:-30
#lace:-31 #lado:31 #lass:23 #late:40 #left:21 #lega:-25 #lego:29 #leme:-34 #leva:39 #libr:42 #lien:31 #lier:56
#like:69 #ling:21 #lled:-29 #llev:37 #lqui:129 #ltim:20 #lueg:-19 #luga:24 #lune:128 #make:18 #mana:161 #mand:-35
#mart:95 #marz:-40 #mayb:59 #mbia:-60 #mean:-22 #medi:62 #mela:-30 #meno:84 #mens:-24 #mera:28 #mess:-20 #meti:23
#mier:108 #mina:-22 #mind:-64 #mine:-21 #mism:47 #moda:18 #mond:111 #more:-35 #morn:28 #morr:57 #move:-62 #mpra:45
#much:-18 #muev:-18 #myse:-22 #nana:62 #ncel:-64 #nday:73 #ndra:73 #ndre:-32 #nece:23 #need:33 #neit:20 #nero:-27
#ners:-20 #nesd:47 #nest:64 #neve:59 #next:175 #nfir:-25 #ngan:92 #nged:-20 #ngos:-26 #nico:40 #nine:21 #ning:122
#nito:19 #nksg:18 #nner:-26 #none:48 #noon:44 #nsaj:-24 #nspe:22 #nste:28 #ntem:-23 #ntes:63 #ntre:32 #nuev:-21
#nyth:88 #ocho:21 #odav:-27 #odri:43 #offi:25 #oger:-20 #okin:25 #oles:81 #omes:-29 #omod:22 #omor:72 #once:19
#onda:115 #oner:49 #ones:68 #onfi:-25 #only:39 #onta:19 #onto:72 #oone:110 #oors:43 #open:46 #oqui:26 #orar:-79
#oras:-24 #orit:-21 #orni:24 #orqu:33 #orro:59 #osib:110 #ossi:57 #otat:30 #ould:87 #ound:28 #oupo:-22 #ours:-31
#ovin:-18 #oxim:29 #paci:52 #para:72 #part:-29 #pasa:-42 #pase:-27 #paso:26 #peci:-24 #pect:23 #peda:-25 #pend:-70
#peni:72 #pero:79 #pick:39 #ping:21 #plac:-33 #podr:42 #pons:-22 #poqu:23 #porq:31 #posi:108 #poss:58 #pped:-19
#pran:38 #prec:-25 #preg:-18 #pren:-19 #pril:26 #prim:18 #pron:103 #prox:29 #pued:196 #pues:23 #pull:18 #quee:42
#quie:114 #quis:25 #quit:26 #raba:-18 #rade:-28 #rado:-32 #rake:36 #rani:21 #rari:-79 #rato:-18 #rcol:93 #rday:50
#read:-25 #real:25 #reat:-36 #rece:-18 #reci:-25 #reco:-19 #regu:-26 #remi:-41 #rend:-19 #reti:64 #rgen:-36 #rida:100
#ride:19 #righ:34 #rime:20 #rind:20 #rivi:-18 #rlie:69 #rnes:53 #rnin:22 #rong:-34 #ront:100 #room:18 #rota:35
#roun:43 #roxi:29 #rque:36 #rrad:-49 #rrar:19 #rrow:57 #rsda:22 #rtes:93 #ruck:24 #saba:150 #said:-25 #saje:-23
#sala:-19 #sale:-42 #sali:30 #same:-30 #sand:-20 #satu:56 #scan:30 #sche:-36 #scho:29 #scri:-41 #sday:142 #self:-20
#sema:95 #send:-20 #sgiv:18 #shes:-24 #shop:-36 #shou:-18 #sibl:168 #sier:24 #sito:29 #smok:19 #sold:23 #soon:114
#spac:49 #sper:-23 #spue:30 #sque:39 #ssag:-19 #ssed:-28 #ssib:58 #stan:-57 #stea:25 #sted:29 #ster:-43 #sund:-39
#swap:-23 #swit:-50 #tead:27 #teme:-23 #temp:48 #tend:83 #teng:110 #test:19 #teve:39 #text:-66 #than:-43 #then:59
#thin:45 #this:-23 #thos:71 #thur:88 #tien:82 #till:-38 #time:63 #tipo:27 #tira:27 #tire:31 #tmrw:26 #todo:-25
#tomo:59 #trad:-21 #trae:23 #trip:22 #truc:24 #tter:35 #tues:136 #turd:56 #twee:33 #ualq:129 #uand:41 #ubil:27
#ueda:126 #uedo:69 #ueez:37 #uego:-29 #uesd:71 #ueve:62 #uevo:-18 #ugar:24 #uier:125 #uisi:25 #uito:42 #ulti:20
#unda:-41 #undr:-32 #unes:128 #unic:28 #unos:-30 #unte:-34 #urda:56 #urge:-34 #urno:26 #ursd:22 #uste:40 #vail:74
#varl:21 #veni:39 #very:-41 #vier:37 #ving:-24 #wapp:-18 #wedn:47 #weds:32 #week:91 #ween:34 #went:-21 #were:-19
#what:24 #when:87 #whic:39 #wifi:-19 #wipe:21 #witc:-50 #with:-23 #work:44 #wron:-34 #xcep:19 #xima:19 #year:-22
#your:29 #ysel:-22 #ythi:82 %again_later:70 %again_later%agree:23 %again_later%bring:91 %again_later%busy:-40
%again_later%call_off:28 %again_later%car:-29 %again_later%doubt:-67 %again_later%family:18 %again_later%message:-18
%again_later%money:-27 %again_later%odometer:-58 %again_later%on_way:42 %again_later%opening:53
%again_later%pay_day:-85 %again_later%phone:-48 %again_later%place:-21 %again_later%question:19
%again_later%season:-72 %again_later%shift_it:24 %again_later%start_again:-24 %again_later%wrong_one:20 %agree:18
%agree%call_off:40 %agree%car_part:38 %agree%doubt:22 %agree%elsewhere:30 %agree%family:51 %agree%how_long:97
%agree%leave_me:31 %agree%machine:19 %agree%meaning:23 %agree%odometer:59 %agree%on_way:29 %agree%opening:24
%agree%pay_day:27 %agree%phone:33 %agree%question:32 %agree%season:39 %agree%shift_it:51 %agree%smoke_smell:-27
%agree%start_again:-28 %agree%wrong_one:70 %away:-30 %away%call_off:-24 %away%car:-25 %away%gone_car:22
%away%how_long:23 %away%lift:54 %away%on_way:34 %away%opening:18 %away%refuse:-18 %away%shift_it:-24 %bad%machine:21
%bad%shake:22 %bring:143 %bring%car:50 %bring%car_part:63 %bring%fails:30 %bring%family:20 %bring%how_long:22
%bring%noise:27 %bring%odometer:-37 %bring%on_way:-33 %bring%opening:39 %bring%phone:24 %bring%question:60
%bring%shift_it:-72 %bring%staff:21 %bring%start_again:37 %busy:42 %busy%call_off:25 %busy%leave_me:47
%busy%refuse:30 %busy%season:-29 %call_off:-53 %call_off%doubt:26 %call_off%elsewhere:24 %call_off%fails:-18
%call_off%gone_car:-35 %call_off%how_long:30 %call_off%lift:18 %call_off%message:-30 %call_off%money:24
%call_off%on_way:32 %call_off%opening:23 %call_off%pay_day:-27 %call_off%phone:-32 %call_off%refuse:80
%call_off%season:-68 %call_off%shift_it:33 %call_off%start_again:-31 %call_off%thanks:-23 %call_off%who:-21
%call_off%wrong_one:38 %car%car_part:26 %car%gone_car:-33 %car%lift:36 %car%question:-25 %car_part:63
%car_part%do_it:41 %car_part%elsewhere:20 %car_part%money:40 %car_part%noise:34 %car_part%opening:20
%car_part%place:19 %car_part%refuse:21 %car_part%season:-18 %car_part%shift_it:34 %car_part%start_again:18 %do_it:-99
%do_it%family:-18 %do_it%how_long:-37 %do_it%on_way:19 %do_it%opening:21 %do_it%pay_day:-27 %do_it%season:-35
%doubt:-32 %doubt%season:-30 %doubt%shift_it:-43 %elsewhere:-34 %elsewhere%place:24 %elsewhere%refuse:27
%elsewhere%wrong_one:-21 %fails%phone:19 %fails%refuse:-40 %fails%shift_it:-19 %family%odometer:-29
%family%question:-29 %gone_car:-26 %gone_car%phone:29 %gone_car%season:-27 %how_long:111 %how_long%leave_me:37
%how_long%opening:-57 %how_long%pay_day:-28 %how_long%question:-102 %how_long%refuse:35 %how_long%staff:-18
%how_long%wrong_one:18 %leave_me:22 %leave_me%message:-31 %leave_me%pay_day:33 %leave_me%season:30
%leave_me%shift_it:26 %leave_me%smoke_smell:18 %leave_me%start_again:-18 %lift%on_way:22 %lift%refuse:35
%machine%meaning:19 %machine%shake:22 %machine%wrong_one:19 %meaning:-19 %meaning%question:-63 %meaning%shake:22
%message:-136 %message%on_way:-29 %message%refuse:-18 %money:-106 %money%question:37 %money%refuse:-22
%money%season:-26 %money%shift_it:-21 %money%smoke_smell:-29 %money%wrong_one:-31 %noise:20 %odometer:18
%odometer%shift_it:-22 %on_way:20 %on_way%place:57 %on_way%season:21 %on_way%shift_it:36 %on_way%thanks:19
%opening:-142 %opening%place:-58 %opening%question:-69 %opening%staff:-49 %opening%wrong_one:37 %pay_day:-72
%pay_day%question:-26 %pay_day%refuse:-27 %pay_day%shift_it:-27 %phone:-123 %phone%question:-23 %phone%refuse:54
%phone%shift_it:-19 %phone%staff:-31 %place%refuse:18 %place%season:21 %question%season:-28 %question%who:-48
%refuse:-30 %refuse%season:-59 %refuse%shift_it:45 %refuse%thanks:-27 %season:-78 %season%shift_it:-69
%season%start_again:-22 %season%thanks:-19 %season%wrong_one:-40 %shake:-21 %shift_it:73 %shift_it%wrong_one:-32
%smoke_smell:-34 %staff:-91 %staff%start_again:21 %staff%wrong_one:-20 %thanks:-67 %who:-72 @?:92 @after_visit:-139
@car:-67 @confirm:-1010 @confirm_stop:-55 @day:232 @later:-119 @nothing:-268 @odometer:-165 @offers:-407
@offers_:-106 @offers_the_th:-59 @reading:40 @time:346 @times:492 @walk_in:59 ^_$:-172 ^_a:47 ^_afternoon:-26
^_all:-32 ^_antes:-29 ^_any:153 ^_are:-48 ^_as:36 ^_asap:169 ^_ask:-22 ^_blue:-19 ^_call:-57 ^_cancel:-31 ^_check:-20
^_could:31 ^_cual:-56 ^_cualquier:83 ^_cuando:63 ^_cuanto:-38 ^_de:24 ^_depende:-45 ^_do:-88 ^_early:25 ^_el:-35
^_end:30 ^_entre:26 ^_es:-38 ^_estan:-53 ^_este:21 ^_friday:-57 ^_give:-49 ^_got:45 ^_hableme:-38 ^_half:21
^_hasta:-30 ^_how:-45 ^_hoy:52 ^_i:19 ^_id:40 ^_idk:-30 ^_in:48 ^_it:-26 ^_la:-102 ^_late:18 ^_lets:-33 ^_lo:110
^_make:31 ^_manana:28 ^_martes:23 ^_maybe:19 ^_me:-37 ^_mi:-18 ^_miercoles:27 ^_mon:30 ^_muy:-22 ^_my:42 ^_neither:20
^_new:-22 ^_next:98 ^_ninguna:32 ^_no:37 ^_none:48 ^_noon:19 ^_ok:-31 ^_para:-53 ^_please:-22 ^_podria:22 ^_por:-18
^_prefiero:-18 ^_puedo:21 ^_que:-65 ^_quiero:29 ^_remind:-41 ^_right:19 ^_sat:53 ^_saturday:32 ^_se:-38 ^_shes:-20
^_si:-26 ^_stop:-35 ^_sunday:37 ^_sure:25 ^_the:-84 ^_this:30 ^_thursday:-39 ^_todavia:-19 ^_today:21 ^_tomorrow:32
^_trabajan:-43 ^_try:-89 ^_tues:49 ^_tuesday:30 ^_un:25 ^_una:34 ^_wed:65 ^_what:-29 ^_whatever:19 ^_whenever:103
^_which:-32 ^_whichever:30 ^_who:-20 ^_will:-19 ^_works:-19 ^_ya:-38 ^_yes:32 ^_you:-18 a:69 a__hora:77 a__in:18
a__no:18 a__si:19 a__weeks:-27 a__y:27 a_la:51 a_las:109 a_lunch:-27 a_primera:19 a_ring:-36 a_saturday:-25 about:85
abran:19 abren:-70 abren_$:-70 aceite:20 after:68 after_$:50 after__day:-22 after_work:26 again:-29 again_on:-20
ahorita:-25 algo:64 all_day:-34 also:49 also__you:18 am:80 am_y:19 an:106 an__change:18 an_appointment:18
an_inspection:22 an_opening:44 and:123 and__have:19 and__is:26 and__need:-24 and_can:25 and_how:28 and_i:-22
and_im:24 and_is:19 and_we:20 anda:-26 ano:-21 antes:66 any:263 any__but:59 any__next:26 any__that:23 any__those:19
any_chance:20 any_day:124 any_of:28 any_time:45 anything:71 anything_$:-26 april:26 apunteme:-18 aqui:21 are:-72
are__there:-31 are_you:-67 are_your:-38 around:48 around_$:25 as:63 as__as:40 as_of:-28 asap:292 asap_$:148 ask:-131
ask__again:-21 ask_me:-106 at__it:18 at_and:35 at_instead:-24 at_or:-34 at_work:-33 available:55 baby:-19 be:96
be_$:21 be_better:22 be_done:-20 be_the:33 been:-28 been__to:-25 before:45 before_you:19 better:46 better_$:42
between:32 blue:-21 blue_$:-18 bout:35 brakes:20 but:176 but__is:18 but__it:35 but_it:-18 but_monday:56 but_the:28
by:45 by_tomorrow:19 call:-51 call_me:19 cambiar:-25 came:-32 can:186 can__be:33 can__bring:21 can__come:34
can__do:93 can__it:42 can__me:24 can__stop:28 can__switch:-27 can_i:39 can_it:22 can_we:-24 can_you:50 cancel:-45
cancel_my:-30 cant_make:-25 car:-34 carro:-18 chance:27 change_$:19 changed_it:-19 check:-28 check__me:-27
check_with:-29 christmas_$:-21 cita_$:-31 cita__el:21 cita__favor:26 cita_el:24 cita_para:25 cita_por:26 close_$:24
come__friday:26 come__instead:-35 come_in:23 come_thursday:20 comes:-29 como__las:18 como_a:23 con:-63 con_el:-19
con_ustedes:-20 confirmo:-37 confirmo_$:-29 cost_and:20 costo:-26 could:99 could__be:20 could__do:40 could__it:19
could_do:23 could_it:19 could_you:32 crack:22 crack_of:22 cual:-59 cual__su:-39 cual_es:-40 cualquier:126
cualquier__menos:50 cualquier_dia:98 cuando:34 cuando__el:-18 cuando_lo:-22 cuando_salga:-19 cuanto_se:60 da:27
da_igual:20 dan:-22 dawn:21 day:158 day_$:-30 day_after:41 day_but:50 day_is:35 de:24 de__a:42 de__dia:-24
de__dos:-26 de__me:24 de__semana:20 de_aqui:22 de_esas:20 de_las:-37 de_manana:-40 de_mes:34 deal:23 deal_$:27
del:-33 del_jueves:-45 del_martes:-18 depende:-44 depends:-19 descanso:27 despues:30 despues_del:25 dia:157 dia_$:20
dia__el:54 dia_libre:22 dia_menos:71 dias:22 dias_$:23 did:-20 digan:20 digo:-84 digo_$:-53 do:87 do__do:18
do__guys:-22 do__have:-22 do__instead:20 do__open:-18 do__th:29 do__work:-22 do_friday:29 do_instead:63
do_thursday:-23 do_you:-69 does:-19 domingo_o:27 domingos:-26 domingos_$:-26 doors:43 driving:-18 drop:62 drop_it:28
earlier:56 early:50 easter:-30 easter_$:-31 el:166 el__despues:22 el__en:36 el__es:28 el__pasado:-42 el__pero:20
el__puedo:33 el__que:36 el__si:26 el__temprano:18 el_carro:-19 el_de:-20 el_jueves:43 el_lunes:92 el_martes:69
el_mes:-35 el_miercoles:41 el_mismo:-32 el_precio:-19 el_sabado:122 en__del:-25 en__dias:-25 en__manana:-18 en__se:66
en__tarde:45 en_cuanto:66 en_el:-38 en_la:32 en_las:-20 en_marzo:-28 en_unos:-29 en_vez:-19 end:31 end_$:-23
end__the:35 end_of:45 ends:25 entre:43 entre_semana:19 era:-22 es:-85 es_$:-25 es__horario:-39 es_mi:54 es_su:-39
esas:55 ese:22 ese__no:22 ese_dia:47 esos:44 espacio:49 espacio_$:30 esta:-50 estan:-63 este:21 este_mes:-22
evening:31 every:-33 every_morning:-19 except:19 favor_$:-32 filled:-19 fin:43 fin__mes:31 fin_de:29 fine_$:-22
first:38 first__of:20 first_thing:23 first_week:20 fit:30 fit__in:20 for:67 for__oil:36 for_an:60 for_me:58 free:49
fri:44 friday:87 friday_$:53 friday_afternoon:-39 friday_but:35 friday_instead:25 friday_is:-30 friday_morning:21
from:64 from_the:22 get_it:-18 get_my:21 give:-71 give__a:-62 give_me:-67 go__friday:-28 go_with:-24 going:18 good:22
got:186 got_$:68 got_a:64 got_anything:52 great:-32 guy:-37 guys:-50 guys_open:-20 hableme:-31 hableme_por:-28
habra:26 hacer:-20 half:24 has:38 hasta:-47 hasta__hora:-22 hasta_que:-36 have:72 have_an:31 hay:60 hay_$:27 hijo:-18
hold:-22 home:22 hora:29 hora_que:57 horario:-77 horas:-24 hour:41 hours:-31 how:25 how__are:-21 how__hours:21
how__is:-23 how_about:48 how_bout:35 how_late:-25 how_many:18 hoy:54 hoy_$:-21 hoy__de:21 hoy__la:19 hoy_en:20
hoy_mismo:50 humo:-35 humo_$:-39 hundred:-36 hundred_$:-24 i:-25 i__a:-23 i__at:-40 i__by:31 i__from:18 i__in:42
i__to:-43 i__you:-26 i_bring:29 i_come:18 i_get:-20 i_stop:31 i_switch:-28 i_work:32 id:54 idea:-25 idk:-32 if:66
if__is:28 if_i:-24 if_you:40 igual:18 ill:51 ill_be:32 ill_stop:18 ill_wait:23 im:59 im__the:22 im_retired:34 in:80
in_$:31 in__day:-18 in__the:37 in_friday:39 in_the:-28 in_two:20 in_your:27 instead:28 instead_$:50 is:46 is_$:-43
is__an:-20 is__at:30 is__but:19 is__ok:20 is__on:19 is__the:-38 is_better:-43 is_fine:25 is_in:-18 is_not:20 is_ok:30
is_on:-20 is_shaking:20 is_the:-58 is_there:34 is_this:-35 is_your:19 ish:23 it:-54 it_$:-63 it__and:23 it__at:-25
it__done:-18 it__friday:28 it__in:-23 it__on:-20 it_and:38 it_be:33 it_in:27 it_is:-20 it_myself:-18 it_to:-39
it_would:19 jaja_$:21 jueves:55 jueves_$:-55 jueves__a:39 jueves__la:34 jueves__las:-20 jueves_en:19 jueves_pero:35
jueves_si:-18 just:-35 kids:44 know:-23 la:45 la_$:-29 la__de:24 la__el:30 la__las:-28 la__que:64 la__semana:31
la_cita:-38 la_de:-46 la_del:-25 la_hora:58 la_proxima:20 la_semana:29 la_tarde:55 labor:-30 labor_day:-31 las:81
las_$:-60 las__que:21 las__y:25 las_mil:-19 las_no:23 las_y:30 late__you:-23 late_are:-21 later:44 le:-97 le_digo:-55
le_sale:-40 left:21 les:-22 let:-33 let_me:-26 libre:42 libre_$:31 light:20 like:70 like_$:34 llego:29 llego_$:21
lo:-60 lo__a:-18 lo__el:-27 lo__en:-57 lo__pronto:87 lo_dejo:-24 lo_llevo:-34 lo_mas:103 lo_tengo:-19 lol:21
long_$:31 look:-27 los__en:23 luego:-19 lugar:24 lugar_$:36 lunch:-21 lunes:122 lunes__las:19 lunes_a:28 make_it:35
manana:75 manana__la:31 manana__las:30 manana_a:29 manana_temprano:19 many_hours:21 martes:95 martes_$:37
martes__la:22 martes__le:-40 martes_a:22 martes_pero:-34 marzo:-40 mas:108 mas__posible:42 mas__que:40 mas_pronto:86
mas_temprano:-31 maybe:59 maybe_$:18 maybe_next:36 me:-83 me_$:81 me__el:38 me__igual:24 me__im:-19 me__on:-20
me__ring:-37 me__the:-24 me__week:-82 me__yo:18 me_a:-64 me_after:-51 me_again:-25 me_da:30 me_in:-25 me_next:-79
media:23 media_$:18 medio:37 medio_dia:27 mejor_$:-23 mejor__lunes:22 mejor_el:33 menos:84 menos__lunes:41
menos_el:54 mes:-19 mes_pasado:-32 mi_cita:-30 mi_hijo:-18 mi_turno:21 miercoles:85 mil:-23 mil_$:-19 mind:-23
mine:-21 mis:-25 mismo:49 mon:59 mon__tues:18 mon_or:22 monday:115 monday__be:28 monday_at:30 monday_morning:-22
more:-24 morning:-39 morning_$:-57 mornings:55 move:-42 move__to:-22 moving:-18 much:-20 muy:-18 my:47 my_number:18
my_shift:24 myself:-22 n:20 nd:47 necesito:29 necesito_que:21 need:52 need_a:18 needed:-24 neither:20 never:-40
new:-69 new_tires:-26 next:175 next_week:23 ni__ni:23 night_$:-26 nine:21 ningun:-19 ninguna:26 no_$:-73 no__do:25
no__hoy:18 no__para:76 no__yet:-25 no_but:-34 no_can:26 no_el:62 no_good:24 no_hay:34 no_idea:-24 no_quiero:-24
no_se:-43 no_tiene:73 no_voy:-36 none:48 none__those:24 none_of:24 noon:37 noon_$:19 not:-20 not__yet:-22 not_now:-22
not_sure:-24 ocho:21 oclock_$:-18 of:59 of__month:30 of_the:43 of_them:21 of_those:37 off:43 off_$:20 office_$:20
oil_change:19 on:19 on_a:-28 on_friday:28 on_it:28 on_me:25 on_saturday:-21 on_saturdays:-30 on_sunday:-20 on_the:22
on_thursday:23 one:-75 one_$:-77 one_please:-20 only:39 open:-43 open_$:64 opening:56 or:-18 or_$:-45 or_tues:18
out:-90 over_$:19 para:63 para__de:24 para__lo:-21 para__sabado:62 para_cuando:28 para_la:27 para_que:-25
pasado_$:-23 pasado_manana:25 paso:26 pedal:-24 pero:83 pero__las:42 pero_a:47 pero_le:-41 pick:44 place:-21 pm:60
podria:43 podria_ser:28 poquito:23 por__la:23 por__manana:29 por__tarde:33 por_ahi:18 por_favor:-19 por_la:68
porque:33 posible:110 posible_$:112 possible:44 possible_$:48 primera:26 pronto:72 proxima:20 proxima_semana:20
pueda:70 pueda_$:64 puedan:57 puede_$:46 puedo:79 puedo_el:29 que:20 que__el:23 que__me:29 que_hora:-40 que_me:30
que_sea:18 que_sigue:-20 que_tal:24 que_tengan:23 queda:-21 quiero__el:28 quiero_ir:20 quisiera:25 rd:37 rd_$:42
really:19 remind:-38 remind__in:-28 remind_me:-38 retired:44 retired_$:32 ride:20 right:32 right__you:18 ring:-25
road:20 road_trip:19 room:23 rotation:19 run:33 sabado:155 sabado_$:36 sabado__las:27 sabado_a:28 said:-25 sale:-31
sale_humo:-41 salga:-23 saliendo:39 same:-24 same_day:-23 sat:101 sat_morning:21 saturday:84 saturday_hours:-23
saturday_morning:22 saturdays:-27 saturdays_$:-29 schedule:-25 school:29 se:27 se_lo:-24 se_puede:37 se_va:-18 sea:21
semana:80 semana_$:25 semana_de:21 ser_el:18 set:-22 shakes:-39 shaking:23 shes:-24 shop:-27 shop_$:-27 si:76
si__dejo:-23 si__jueves:-19 si__llevo:-20 si__martes:-32 si_el:-25 si_gracias:19 si_hay:18 si_lo:-44 si_me:21
si_puedo:22 sigue:-24 siguiente:22 sin:-22 so:77 sold:23 sometime:23 sooner:48 sooner__better:37 sooner_the:37
soonest:62 soy:29 squeeze:37 squeeze__in:36 squeeze_me:36 stop_$:-36 stop__me:-19 stop_by:28 stop_in:23 su:-38
su_horario:-39 sunday:-34 sunday_$:-90 sunday_or:23 swapped:-18 switch:-45 switch_to:-26 take_the:-18 tal:22 tan:-29
te:-20 te_digo:-22 tempranito:20 tendra:46 tengan:107 tengo_que:-19 text:-41 th:140 th_$:-28 th__the:18 th_is:28
th_so:28 than:-19 thanks:-19 thanksgiving:18 thanksgiving_$:18 that__not:20 that_day:66 the:123 the__after:52
the__for:-20 the__guy:-22 the__in:25 the__is:25 the__on:-30 the__one:-45 the__or:33 the__so:20 the__the:75
the__thing:-24 the_am:-29 the_better:83 the_doors:39 the_earlier:45 the_friday:-70 the_kids:25 the_month:33
the_morning:-23 the_nd:46 the_next:37 the_rd:22 the_sooner:23 the_th:146 the_thing:-18 the_thursday:-20 the_week:26
the_wrong:-26 then:59 then_$:45 there_on:-35 thing:-62 thing_$:-52 third:-26 thirty:18 this:-23 this__the:-30
this_is:-35 this_month:-22 this_morning:-23 this_week:23 this_weekend:31 those:71 thousand__hundred:-18 thurs:63
thurs_$:-20 thursday:23 thursday_$:-20 thursday_and:19 thursday_at:19 thursday_what:18 thursday_works:-31 tiene:59
tienen_$:38 tienen__de:-19 till:-29 tipo:27 tipo_$:18 tmrw:26 to:-49 to__in:21 to__it:19 to__my:29 to_be:28
to_friday:-19 to_get:42 to_monday:-37 todavia:-27 todavia_no:-20 today_$:-32 todo:-30 tomorrow:67 tomorrow_at:23
too:-27 trabajan:-59 trabajo:47 trabajo_$:32 trip:20 truck:24 try:-113 try__in:-22 try_me:-109 tues:65 tuesday:73
turno:29 two:22 two_weeks:24 ultima:19 un:48 un_dia:-20 una:20 una_cita:35 una_hora:-18 unico:28 unos:-30 urgent:-18
urgente:-18 usted:19 va_a:-31 vez:-22 viernes:45 viernes_$:-46 viernes__de:23 viernes__la:25 viernes__las:-42
viernes_a:-25 viernes_pero:19 voy:-41 voy_a:-28 was:-27 we:-24 we__instead:46 we__it:-46 wed:123 wed_$:21 wed_at:38
wednesday:36 weds:32 week:85 week_$:53 week_after:22 weekend:40 weekend_$:28 weekends:-18 weeks:-33 weeks_$:-26
went:-24 were:-19 what_$:-18 what__it:18 what__the:29 what__your:-19 what_about:85 what_are:-44 what_i:-26
what_time:-24 whatever:40 when_you:23 whenever:99 whenever_you:59 whichever:36 who:-28 why_not:18 wifi:-19 wifi_$:-19
will_it:29 with:-19 with_me:-18 with_the:25 wk:20 work:26 work_$:35 works_$:-28 works_but:-27 would__be:-30
would__better:25 would__to:21 would_be:22 would_i:-20 wrong:-34 y:94 y_el:20 y_en:24 y_eso:-18 y_media:21 ya:-66
ya_casi:21 ya_no:-62 year:-19 yes_$:-35 yes__works:-32 yet:-81 yet__me:-53 yo:31 you:91 you__a:-19 you__an:41
you__anything:21 you__im:27 you__it:-31 you__me:26 you__my:-26 you__on:-47 you__the:31 you__what:-21 you_can:53
you_close:25 you_do:109 you_got:78 you_guys:-48 you_have:40 you_pick:28 you_there:-29 you_work:-22 your__hours:-35
youve_got:19
"""
