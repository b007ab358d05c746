"""What speaks for and against `explain`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "explain"
BIAS = -148
WEIGHTS = """\
#abaj:-44 #aben:39 #aber:25 #abin:77 #able:-37 #abor:-41 #abou:-25 #abre:-19 #acei:-51 #acer:80 #acta:24 #actl:70
#addr:-33 #adel:-19 #ados:43 #agai:31 #agar:-21 #agua:101 #ahor:-23 #ails:49 #ains:19 #ajar:42 #akin:-21 #aler:-20
#ales:37 #algo:39 #alle:-60 #allp:-20 #ally:63 #alta:47 #amab:-20 #ance:-37 #anda:28 #ando:-34 #anej:79 #ange:61
#anol:19 #anta:67 #anto:47 #anua:45 #anyw:39 #apag:-18 #apid:-39 #appe:80 #apto:19 #aqui:-30 #arca:-44 #arda:-52
#arde:-23 #arge:-18 #argi:-23 #aron:37 #arou:-20 #arra:-22 #arzo:23 #asta:91 #asur:41 #ated:-29 #ater:-38 #atis:-53
#ator:49 #avor:18 #back:-24 #bajo:-24 #ball:-19 #befo:45 #belt:52 #betw:-37 #bien:-31 #bina:18 #blem:40 #blig:54
#bout:-27 #bran:-48 #brea:39 #bren:-20 #brin:-47 #busi:-40 #cabi:77 #camb:25 #came:22 #caro:-34 #caso:19 #ccio:-31
#ceit:-51 #cesa:29 #cesi:20 #cess:49 #chan:23 #char:-45 #cien:-18 #cier:-20 #cita:45 #clar:-19 #clos:-20 #cluy:42
#come:37 #como:-86 #comp:-29 #cont:45 #cosa:39 #cost:-101 #coul:78 #crib:-33 #ctam:27 #ctly:70 #cual:45 #cuan:-47
#cuen:20 #cuer:28 #dado:-42 #dang:49 #days:-28 #ddre:-33 #debe:20 #deci:41 #deja:-23 #dejo:18 #depe:-23 #dias:-26
#dice:24 #dier:21 #digo:-35 #dire:-29 #does:73 #doin:107 #dome:34 #dond:-39 #done:20 #down:38 #dres:-40 #driv:111
#dura:80 #eale:-18 #eall:68 #ease:29 #easu:41 #eavi:26 #ecci:-30 #eces:82 #ecio:-18 #ecir:50 #ecom:25 #eeds:51
#efor:45 #egas:21 #egoc:-35 #egre:-22 #egue:-26 #egui:48 #egur:22 #eite:-51 #ejan:50 #ejar:19 #elig:48 #else:19
#eman:-20 #emen:36 #emin:40 #empr:-26 #enco:55 #enda:18 #enen:-18 #enga:-31 #engi:21 #engo:-39 #ensa:-19 #enta:21
#ente:41 #enti:25 #ento:18 #entr:-18 #epen:-24 #epla:46 #erar:55 #eras:54 #erda:71 #eren:61 #erio:31 #eros:-40
#erou:44 #erpe:23 #erte:27 #ervi:21 #esar:21 #esas:21 #escr:-24 #esnt:-35 #espe:25 #essa:50 #esta:52 #este:-40
#esto:-62 #etal:18 #eter:28 #etti:18 #etwe:-37 #even:73 #exac:89 #exit:-31 #expl:148 #exti:-22 #falt:49 #fere:20
#fica:38 #fill:21 #filt:83 #find:59 #firs:-28 #five:29 #flui:70 #flus:47 #fore:49 #foun:19 #four:46 #free:-80
#fron:36 #fuer:22 #gain:31 #game:19 #gara:-18 #gast:75 #gato:49 #gent:63 #gero:44 #gets:18 #gett:21 #gine:19 #gnif:36
#gnor:29 #goci:-35 #goin:-55 #gone:-21 #good:-21 #grat:-53 #grav:50 #gres:-22 #guan:105 #guen:-23 #guir:49 #guro:24
#hace:104 #hago:43 #hang:29 #happ:81 #hard:-26 #harg:-41 #hast:22 #have:24 #heel:-27 #here:-25 #hese:33 #hich:30
#hing:66 #hist:20 #hone:22 #hora:-71 #hose:18 #houg:32 #houl:44 #hour:-38 #hurs:-22 #iaja:45 #ible:-20 #icam:30
#idea:-23 #iend:19 #iene:46 #iere:84 #iero:-27 #ific:37 #igam:28 #ight:-49 #igni:36 #igno:31 #igro:48 #iles:37
#ilte:58 #iltr:27 #incl:42 #insu:-20 #inte:33 #invo:33 #ious:30 #iqui:23 #irec:-29 #ires:34 #irst:-28 #irve:-43
#isen:-19 #jand:82 #just:-18 #kids:21 #king:-32 #labo:-41 #lain:64 #lama:-23 #lame:-34 #lant:-18 #laro:-28 #last:54
#late:-24 #ldnt:-18 #leak:-19 #leas:25 #leav:29 #left:54 #legu:-22 #lema:45 #lica:91 #life:47 #ligh:-30 #ligr:48
#line:-26 #liqu:28 #llam:-51 #llan:-19 #llas:29 #lleg:-26 #ller:-35 #llow:25 #llpa:-20 #long:23 #lpar:-20 #lter:53
#ltro:27 #luid:70 #lush:47 #luye:42 #mabl:-20 #make:62 #malo:103 #mana:-36 #mane:72 #mano:-18 #manu:47 #many:33
#maqu:-19 #marc:-51 #marz:23 #matt:-25 #mber:-59 #mbia:24 #meas:45 #meno:-29 #ment:33 #mero:-42 #meta:18 #mete:27
#mien:43 #mile:45 #mind:34 #more:56 #moun:19 #mpan:-28 #mpre:-25 #much:-82 #muer:23 #must:44 #nclu:42 #ncon:55
#nden:-27 #nece:98 #need:140 #nego:-35 #neja:81 #nger:61 #ngin:34 #nifi:36 #nigh:-20 #ning:-22 #noma:20 #nore:27
#norm:56 #nsur:-20 #ntas:-21 #nter:38 #ntin:23 #nton:18 #ntra:38 #nual:47 #numb:-57 #nume:-34 #nven:19 #nver:28
#nywa:39 #oble:40 #obli:54 #obot:-21 #ocio:-37 #odom:35 #oesn:-35 #oing:52 #oint:27 #oked:24 #oles:-21 #omas:27
#omet:33 #ompa:-23 #onde:-43 #ontr:46 #ooke:25 #oqui:25 #orio:50 #orma:52 #orri:23 #orro:18 #orse:27 #oser:-36
#otor:24 #otro:26 #ould:73 #ousl:-28 #over:-22 #pano:19 #pany:-21 #pape:23 #para:19 #park:-24 #pasa:122 #pase:-21
#peli:48 #pend:-30 #pens:36 #pent:22 #pera:42 #pero:54 #pido:-42 #plai:64 #plea:28 #plic:90 #poco:23 #poin:21
#poqu:25 #ppen:85 #pren:-19 #pres:-19 #pric:-42 #prin:19 #prob:44 #pued:124 #pues:-31 #pull:-41 #push:24 #qued:61
#quic:-57 #quid:23 #quin:-21 #raba:-44 #rada:-20 #radi:-20 #rage:-18 #ranc:-24 #rand:-18 #rans:31 #rapi:-42 #raro:61
#rata:38 #rati:-56 #rato:-30 #rave:50 #rdad:26 #read:33 #reak:39 #real:49 #rear:33 #recc:-27 #reci:-28 #reet:-38
#regr:-22 #reme:30 #remi:39 #rend:-20 #repl:38 #resa:-36 #ress:-35 #rgen:70 #rgin:-23 #ribe:-19 #rice:-42 #ried:33
#ring:-26 #riou:30 #risk:21 #rive:91 #rivi:20 #rmal:56 #road:19 #robl:43 #robo:-22 #rong:67 #ront:48 #rose:-36
#roso:42 #rota:26 #rous:44 #rpen:23 #rran:-22 #rrie:25 #rsda:-18 #rtan:18 #ruid:-18 #rvic:21 #sabe:60 #safe:29
#saje:-23 #sali:-22 #sari:28 #sary:49 #says:58 #scri:-33 #segu:85 #self:-18 #sema:-21 #sens:19 #seri:32 #sero:-36
#serp:23 #serv:18 #shee:22 #shin:22 #shop:-40 #shou:43 #sign:45 #sigo:44 #sirv:-44 #skip:24 #sold:-23 #soon:44
#span:19 #sper:33 #spri:20 #ssar:49 #stad:58 #stan:33 #star:-23 #stop:-29 #stoy:-19 #stra:19 #stre:-39 #stuf:22
#supp:21 #sura:-20 #tado:41 #tain:19 #take:-38 #tall:-46 #tamb:-19 #tame:22 #tant:29 #tard:-73 #tech:37 #tell:44
#teng:-64 #text:-54 #that:102 #them:99 #then:44 #ther:-24 #thes:33 #they:167 #thin:53 #this:33 #thos:22 #thou:22
#thur:-25 #tien:29 #time:-101 #tine:23 #tire:41 #toca:30 #todo:-20 #toma:-27 #toni:18 #tori:47 #trab:-40 #trad:-21
#tran:45 #trar:55 #tras:29 #trat:37 #trea:37 #tree:-39 #trip:27 #tter:-25 #tuff:22 #turn:-20 #twee:-37 #uand:-71
#uant:128 #ueda:51 #uede:36 #uedo:91 #uego:-25 #uent:18 #uerd:28 #uert:20 #uick:-57 #uien:-55 #uier:50 #uina:-21
#uito:22 #uldn:-18 #ulls:-27 #umbe:-57 #umer:-34 #uran:52 #urge:41 #ursd:-18 #usan:-48 #ushi:19 #usly:-28 #uste:-19
#vega:21 #vent:29 #vera:62 #verd:77 #viaj:59 #vice:25 #vida:37 #vien:25 #ving:21 #vise:-18 #wait:56 #wall:-18
#ween:-37 #were:21 #what:174 #whee:-27 #when:-102 #whic:30 #wifi:-53 #will:60 #wint:30 #with:49 #wont:-26 #worn:23
#worr:41 #woul:-46 #wron:67 #xact:89 #xpla:33 #xpli:116 #xtin:-22 #your:-51 #yway:39 %again_later:86
%again_later%agree:18 %again_later%call_off:-26 %again_later%car:-20 %again_later%car_part:-19 %again_later%do_it:21
%again_later%elsewhere:37 %again_later%how_long:32 %again_later%lift:99 %again_later%meaning:62
%again_later%money:-45 %again_later%odometer:-18 %again_later%place:-19 %again_later%season:46 %agree:-26
%agree%away:21 %agree%call_off:79 %agree%car:34 %agree%car_part:20 %agree%do_it:32 %agree%gone_car:21
%agree%how_long:-52 %agree%meaning:40 %agree%money:51 %agree%place:52 %agree%question:19 %agree%season:30
%agree%shift_it:31 %agree%wrong_one:19 %away%call_off:32 %away%car:26 %away%odometer:31 %away%on_way:39
%away%place:28 %away%refuse:-23 %away%start_again:-18 %bad:27 %bad%car:-20 %bad%car_part:-20 %bad%place:50
%bad%question:92 %bring:-42 %bring%call_off:-22 %bring%do_it:-19 %bring%leave_me:-20 %bring%meaning:28
%bring%money:-25 %bring%odometer:-21 %bring%question:39 %bring%shift_it:-40 %busy:-60 %call_off%do_it:-33
%call_off%lift:27 %call_off%meaning:60 %call_off%message:-36 %call_off%odometer:-54 %call_off%refuse:-54
%call_off%season:25 %call_off%start_again:24 %call_off%thanks:30 %car%gone_car:-21 %car%how_long:-22 %car%lift:-30
%car%meaning:22 %car%odometer:19 %car%question:66 %car%refuse:20 %car%season:18 %car_part:54 %car_part%do_it:-29
%car_part%fails:-36 %car_part%gone_car:-33 %car_part%leak:-25 %car_part%machine:-18 %car_part%money:-47
%car_part%noise:-40 %car_part%odometer:21 %car_part%on_way:34 %car_part%pay_day:-22 %car_part%place:23
%car_part%question:176 %car_part%refuse:36 %car_part%shake:-42 %car_part%start_again:28 %do_it:-26
%do_it%elsewhere:-25 %do_it%leak:-21 %do_it%lift:-24 %do_it%question:134 %do_it%refuse:87 %do_it%staff:62
%do_it%start_again:34 %doubt%question:-21 %elsewhere:-85 %elsewhere%pay_day:32 %elsewhere%place:-19
%elsewhere%question:-84 %elsewhere%season:41 %elsewhere%shift_it:47 %fails:24 %fails%how_long:60 %fails%question:101
%family:-40 %gone_car:-100 %gone_car%money:-28 %gone_car%phone:20 %gone_car%question:-22 %how_long:-206
%how_long%lift:48 %how_long%meaning:19 %how_long%on_way:-18 %how_long%opening:-27 %how_long%question:-93
%how_long%refuse:-48 %how_long%season:27 %how_long%staff:18 %leak:-33 %leave_me:-58 %leave_me%meaning:23
%leave_me%question:-56 %lift:44 %lift%meaning:21 %lift%money:-21 %lift%pay_day:19 %lift%question:-36 %lift%season:46
%machine:-36 %machine%refuse:53 %machine%staff:-18 %meaning:431 %meaning%money:-20 %meaning%noise:18
%meaning%phone:-46 %meaning%place:19 %meaning%question:266 %meaning%refuse:38 %meaning%season:18 %meaning%shift_it:23
%meaning%staff:20 %meaning%thanks:26 %message:-90 %message%question:-43 %message%refuse:-29 %money:-211
%money%place:108 %money%question:-144 %money%refuse:-22 %money%shift_it:-27 %noise:-22 %noise%refuse:-18
%odometer%question:27 %on_way:-39 %on_way%place:42 %on_way%question:44 %opening:-83 %opening%question:-71
%pay_day:-44 %pay_day%question:-46 %pay_day%shift_it:34 %phone:-104 %phone%question:-29 %phone%shift_it:-22
%place:-85 %place%question:-70 %question:254 %question%refuse:45 %question%season:-28 %question%shake:-27
%question%shift_it:-56 %question%staff:62 %question%thanks:-28 %question%who:-139 %question%wrong_one:55 %refuse:-22
%refuse%start_again:-34 %season:53 %season%shift_it:45 %shake:-45 %shift_it%wrong_one:18 %smoke_smell:-21 %thanks:-46
%who:-128 %wrong_one:-69 @?:186 @after_visit:-24 @car:-51 @confirm:-66 @confirm_stop:-130 @nothing:-19 @odometer:40
@offers:-37 @reading:-51 @time:-66 @times:-65 @walk_in:-28 ^_a:-25 ^_aguanta:72 ^_ballpark:-20 ^_cada:20 ^_can:75
^_car:-21 ^_claro:-31 ^_como:-20 ^_could:70 ^_cual:21 ^_cuando:-22 ^_cuanto:63 ^_de:99 ^_depends:-20 ^_do:86
^_doesnt:-34 ^_el:-53 ^_es:44 ^_esta:42 ^_front:18 ^_got:-18 ^_hay:25 ^_how:32 ^_i:-102 ^_is:114 ^_it:-110 ^_lo:-58
^_need:-40 ^_no:25 ^_not:-46 ^_odometer:28 ^_para:44 ^_pero:21 ^_por:49 ^_puede:18 ^_puedo:112 ^_pues:-21 ^_que:36
^_quiero:-19 ^_se:27 ^_should:46 ^_si:-80 ^_sure:-19 ^_that:-62 ^_tienen:-18 ^_top:24 ^_what:-117 ^_when:-26
^_which:31 ^_who:-22 ^_why:117 ^_will:61 ^_y:32 ^_ya:-58 ^_yes:-29 ^_yo:-21 ^_you:-18 a:49 a__carro:20 a__filter:49
a__of:-23 a__off:-22 a__thing:-21 a__to:20 a_cabin:53 a_car:19 a_hacer:69 a_que:-34 a_rip:-30 a_serpentine:18
about:-31 about_$:-42 about_it:23 abren:-19 aceite:-56 acuerdo:20 address:-33 address_$:-24 again:26 again_$:41
aguanta:92 ahi:-29 ahi_$:-22 ahora:-19 algo:45 all:30 all_day:-32 am:49 am_i:36 an:-39 an__day:-20 an_all:-22
an_hour:-30 and:69 and__it:33 and__much:26 and_is:22 and_it:-18 and_what:20 and_why:46 andar:23 anyway:39 anyway_$:39
appointment_$:-20 are:50 are__doing:33 are_they:68 are_we:29 are_you:-34 asi:106 asi_$:111 asi_que:-19 at_that:20
back:-24 ballpark:-20 ballpark_$:-18 be:-28 be_$:-52 be__to:26 be_doing:58 before:45 before_it:61 belt:46 between:-37
brake_$:-18 brakes:25 brakes_$:23 brand:-26 break:39 bring:-37 but_what:26 cabin:59 cabin_filter:52 cabina:18 can:127
can__drive:75 can__get:22 can__wait:95 can_i:99 can_it:78 can_you:-20 car:-22 caro:-32 carro_$:28 caso:19
charging:-23 cita:43 claro:-27 claro__si:-24 claro_que:-24 close:-19 cobran:-19 come:49 come_$:75 come_to:-22
como:-86 como__que:37 company:-21 con:-26 cosa:44 cosa_$:26 cost:-87 cost_$:-48 cost_me:-19 could:80 could_you:63
creo_que:-18 cual__el:40 cuando:-71 cuando_freno:-18 cuanto:37 cuanto__me:65 cuanto_es:-22 cuanto_mas:81
cuanto_me:-32 cuanto_por:-20 dan:-39 dangerous:48 dangerous_$:26 dangerous_to:22 day:-53 day_$:-27 days:-24 de:67
de__a:18 de__cita:21 de__lo:37 de__me:23 de__o:27 de_a:19 de_la:29 de_llantas:-40 de_que:41 de_veras:41 de_verdad:57
de_vida:45 deal:24 decir:45 decir_$:39 dejo:19 del:24 depends:-20 dia:-53 dia_$:-40 dias:-26 did:62 did__find:53
did_it:-24 did_the:29 did_you:63 digame:28 digo:-29 direccion:-27 direccion_$:-18 do:82 do__charge:-22 do__get:-30
do__need:110 do__use:-21 do_i:57 do_it:-49 do_they:29 do_this:31 do_you:-53 does:108 does__take:-24 does_that:57
doesnt:-35 doesnt_matter:-38 doing:107 doing_$:48 doing__it:45 doing_to:45 donde:-38 donde_es:-22 done:20 done_$:20
down:46 down_for:19 down_on:39 drive:111 drive_it:41 drive_to:43 driving:20 drop:-20 due:56 due_for:27 el:-75
el__mes:-18 el__que:-43 el_que:-32 else:21 en_cuanto:-18 en_el:33 encontraron:55 engine:24 entra:-19 era:30 es:215
es_$:-102 es__de:22 es__o:20 es__que:68 es__y:26 es_de:44 es_el:33 es_eso:100 es_este:-30 es_gratis:-49 es_grave:23
es_lo:44 es_malo:58 es_mi:-19 es_muy:20 es_normal:33 es_peligroso:42 es_que:-44 es_un:18 es_una:-23 es_urgente:24
es_y:22 esa:27 esas:22 ese:46 ese_servicio:41 eso:231 eso_$:57 eso__que:28 eso_de:33 eso_del:38 eso_que:24 eso_y:23
espanol:19 esperar:50 esperar_$:37 esta:61 esta_$:21 esta_muy:50 estan:32 este:-46 este_$:-28 esto:-33 esto_$:-32
estoy:-18 even:76 even__a:22 even_is:27 exactamente:27 exactamente_$:24 exactly:70 exactly_$:21 exactly__you:21
exit:-31 explain:37 explica:72 falta:57 falta_$:26 favor:22 favor_$:35 filter:56 filter_$:42 filtro:29 find:43
first:-28 five:29 five_$:20 fix:-23 fix_it:-20 fluid:65 fluid_$:21 flush:47 flush_$:27 for:37 for_$:85 for_a:-19
for_it:-28 for_what:21 found:19 four:46 four_$:44 free:-84 free_$:-69 freno:-41 freno_$:-30 frenos:36 frenos_$:39
friday__do:19 front:36 fue:51 fue__que:41 fue_lo:41 get:-31 gets:18 getting:21 go_for:-22 going:-55 going__be:-28
going__cost:-25 going_to:-53 gone:-20 good:-20 gratis:-53 gratis_$:-48 grave:50 hace:24 hace_$:25 hace_falta:22
hacer:86 hacer_$:35 had:-23 hago:43 hago_$:37 happen:30 happens:58 happens__i:61 happens_if:61 has:-19 hasta:22
hasta_que:-40 have:19 have__do:76 have_to:56 hay_que:-22 hora:-29 hour:-32 how:54 how__are:50 how__can:61
how__does:-24 how__for:-40 how__i:-69 how__is:-43 how__to:-24 how__will:-20 how_come:75 how_low:37 how_many:34
how_much:-83 hoy:-35 i__all:44 i__have:35 i__it:47 i__need:54 i__on:83 i__the:-21 i__these:-25 i__to:-80 i__you:-31
i_be:37 i_can:-21 i_come:-21 i_drive:56 i_go:42 i_mean:-33 i_need:38 i_skip:26 i_thought:20 i_wait:23 i_was:-30
idea:-23 if:96 if__just:18 if__skip:26 if_i:91 ill:-26 im:22 im__on:25 in:-40 in_$:-20 incluye:43 insurance:-20 is:84
is__a:42 is__about:-42 is__address:-31 is__an:-19 is__appointment:23 is__bad:55 is__cabin:44 is__cost:-30
is__dangerous:40 is__do:41 is__for:56 is__free:-52 is__going:-27 is__labor:-30 is__like:-26 is__oil:-27 is__ok:60
is__on:39 is__price:-32 is__really:-32 is__run:-104 is__safe:35 is__something:30 is__thing:22 is__wait:-33
is__wifi:-37 is__with:51 is_a:103 is_due:25 is_fine:-24 is_for:32 is_it:121 is_that:91 is_the:-110 is_this:-38
is_what:-23 is_wrong:52 is_your:-44 it:142 it_$:-32 it__a:-18 it__all:-24 it__an:-28 it__done:-19 it__for:40
it__free:-27 it__in:-21 it__is:45 it__it:35 it__like:-18 it__that:53 it__this:29 it__to:53 it_a:28 it_an:-22
it_back:-19 it_bad:36 it_be:-40 it_cost:-33 it_dangerous:29 it_do:23 it_down:19 it_is:-96 it_need:22 it_now:29
it_ok:57 it_really:-21 it_safe:35 it_take:-29 it_to:48 it_wait:77 it_what:20 just:-18 k:44 k_$:30 kids:21 la:-60
la__de:-31 la_cita:61 labor:-41 labor_$:-26 las:-33 last:49 later:-21 le:171 le__a:91 le_digo:-19 le_falta:36
le_hacen:32 le_pasa:31 le_toca:37 le_van:68 leaving:26 left:54 left_on:48 les:54 let:-18 life:33 light:-19
light__on:-18 like_an:-27 liquido:24 llamen:-19 llamen_$:-18 llantas_$:44 lo:52 lo__le:19 lo_dejo:23 lo_hago:46
lo_mas:-21 lo_necesito:42 long:18 long__i:43 long__it:36 long_do:-19 long_does:-27 look:20 los:-25 low:78 low_$:24
luz:-19 make:67 make__to:63 make_it:75 mal:67 mal_$:103 malo:96 manejando:72 manejar:25 manual:47 many:33 maquina:-19
marca:-38 marzo:23 mas:23 mas_pronto:-18 matter:-27 me_$:-23 me__it:23 me__por:46 me_acuerdo:22 me_back:-25
me_explica:72 me_llamen:-18 me_lo:-38 me_puede:24 me_sirve:-42 me_urge:-38 me_what:59 menos:-28 mensaje:-18 mes:32
mes_$:30 metal:18 mi:-67 mi_carro:23 mientras:31 mil:19 miles:38 mis:31 mm:43 more:65 more_$:55 much:-92 much__it:-40
much_for:-32 much_is:-53 much_to:-26 must:44 muy:44 muy_mal:33 my:-47 my__says:20 necesario:29 necesito_$:49
necesito_que:-18 necessary:49 necessary_$:49 need:100 need__bring:-20 need__for:-39 need__oil:30 need_a:-23
need_an:26 need_that:49 need_to:-66 needs:51 needs_to:26 negocio:-35 new:-29 next_to:19 ni:-23 no:-33 no_$:-59
no__acuerdo:22 no__hago:49 no__is:39 no__necesario:-29 no_es:-28 no_lo:33 no_para:-22 no_what:63 noise:18 nomas:20
normal:50 not:-187 not_$:-129 now:87 now_$:67 number:-67 number_$:-32 number_is:-22 numero:-28 numero_es:-18 o:172
o_es:48 o_que:31 odometer:35 of__do:-25 of_oil:-25 of_them:24 off_of:23 oil:-32 ok:65 ok__drive:55 ok__it:-20
ok_to:72 on:108 on_$:-41 on__list:24 on__road:27 on_me:40 on_my:28 one_$:21 or:86 or_$:-21 or__that:20 or_is:30
or_no:25 or_the:27 other:20 otra:18 otro:27 otro_mes:33 paper:18 para:35 para__es:49 para__lo:28 para__no:-23
para__quieren:33 para__sirve:28 para_cuando:-18 para_que:96 pasa:112 pasa__no:43 pasa_si:68 peligroso:42 pero:53
pero__es:25 pero__que:27 pero_que:53 person:19 pie:19 place:-28 please:31 please_$:20 poco:18 point:18 poquito:25
por:38 por__no:-29 por_favor:26 por_que:89 price:-39 price_on:-23 problema:49 puede:50 puede_esperar:36 puedo:109
pues:-20 pulls:-27 que:65 que_$:-67 que__abren:-18 que__caro:-31 que__con:-18 que__de:-39 que__decir:50 que__en:32
que__es:-76 que__ese:45 que__eso:117 que__estan:-22 que__hacen:24 que__hicieron:23 que__le:57 que__llamen:-18
que__lo:67 que__mal:52 que__malo:36 que__me:-24 que__por:-18 que__que:-21 que__si:63 que__toca:31 que__un:21
que__van:73 que_era:35 que_es:265 que_fue:50 que_hora:-31 que_incluye:44 que_la:-21 que_le:197 que_me:-63 que_no:-96
que_numero:-18 que_pasa:68 que_quiere:50 que_quieren:33 que_sea:-23 que_si:-52 que_significa:27 que_sirve:28
que_taller:-19 que_tan:137 que_tiene:60 que_va:-22 queda:64 queda_$:59 quedo:-18 quick:-54 quick_$:-28 quien:-40
quien_es:-44 quiere:42 quiere_decir:50 quieren:42 quiero:-22 quiero_que:-20 rapido:-39 rato:-27 real:-19 really:68
really_free:-25 rear:30 rear_$:18 remind:45 remind__what:56 remind_me:47 right_now:23 rip:-30 road:21 road_trip:29
robot:-21 robot_$:-20 run:-161 run_$:-112 run_me:-42 saben:40 saber:24 safe:33 safe_to:29 says:58 se:19 sea:-25
see:-33 see__my:-27 seguir:49 seguro:24 semana:-23 serious:60 serious_$:42 serpentine:23 serpentine_belt:23
service:29 set:-36 set__back:-22 set_me:-22 shop:-46 shop_is:-23 should:40 should__be:40 should_i:41 si:59 si_$:-43
si__dejo:26 si__lo:42 si__que:-29 si_lo:67 si_me:-20 si_no:64 significa:36 sigo:46 sirve:-27 sirve_$:-33 skip:24
so:64 so__is:25 so_soon:45 so_what:29 sold:-22 something_that:22 soon:52 speak:-18 spring:20 stop:-25 street:-38
street_$:-24 stuff:22 sure:-20 take:-36 take_$:-32 taller:-32 tambien:-19 tan:190 tan__esta:35 tan__estan:63
tan_caro:-29 tan_grave:25 tan_mal:58 tan_malo:35 tarde:-19 tech:38 tell:48 tell_me:49 tengo:-39 tengo_que:-33
text:-19 texting:-21 that:102 that_$:42 that__do:25 that_a:24 that_and:21 that_be:-31 that_is:-42 that_it:21
that_the:21 the:59 the__are:-22 the__if:18 the__is:24 the__on:-23 the__one:26 the__or:23 the__says:28 the__thing:38
the__with:28 the_address:-18 the_belt:27 the_other:27 the_price:-27 the_tech:40 the_thing:44 the_tires:62
the_wait:-35 the_winter:39 them:99 them_$:84 then:44 then_$:36 there_$:-21 these:33 these_$:52 they:162 they_$:57
they__the:35 thing:43 thing_$:-20 this:33 this_$:-66 this__for:38 this_about:-47 this_number:-28 those:22 though:20
though_$:21 tiene:40 tiene_$:49 tienen:-18 tienen_$:-22 time:-107 time__it:-24 time__you:-23 time_do:-26 tirado:18
tires:44 tires_$:25 to:78 to_$:-27 to__and:19 to__me:-41 to__this:25 to__to:33 to_bring:-27 to_cost:-25 to_do:67
to_drive:75 to_fix:-21 to_it:47 to_know:19 to_my:-21 to_see:-19 toca:36 toca_$:25 today_$:-19 too_$:-18 top:39
top_off:41 trabajo:-25 tread:44 trip:29 un_poquito:19 under:-18 urge:-27 urgent:25 urgent_$:23 urgente:45 use:-39
va:-55 va_$:-20 van:65 van__hacer:58 van_a:76 vegas:21 vegas_$:22 veras:41 verdad:67 vida:40 viene:28 viernes__de:20
wait:41 wait_for:-18 wait_on:20 wait_til:20 was:49 was_the:72 week:-24 were:21 what:178 what__a:90 what__if:61
what__it:46 what__that:-39 what__the:-22 what__this:-23 what__wrong:55 what__you:83 what__your:-48 what_a:-41
what_about:-34 what_am:28 what_company:-20 what_did:127 what_do:-47 what_does:94 what_else:18 what_exactly:42
what_for:37 what_happens:60 what_i:-25 what_is:20 what_my:-22 what_needs:42 what_street:-26 what_this:24
what_time:-75 what_was:93 what_would:-55 wheel:-23 when:-100 when_i:-55 where__the:20 which:31 which__are:22
which__do:-20 which__is:-44 which_exit:-31 which_shop:-24 who:-45 who__this:-28 who_is:-36 why:232 why_$:51 why__i:37
why__it:53 why__you:35 why_do:69 why_does:37 why_is:45 why_not:-130 why_would:51 wifi:-53 wifi_$:-42 will:60
will_the:29 winter:30 winter_$:40 with:56 with_it:34 with_the:27 wont:-26 worn:23 worse:18 would:-25 would__need:33
would_that:-49 would_you:48 wouldnt:-20 wrong:67 wrong_with:63 y:118 y__de:21 y__que:49 y_cuanto:25 y_de:20 y_eso:34
y_para:24 y_por:22 y_que:39 ya:-100 ya_$:18 ya_esta:-29 ya_que:-19 yes:-66 yes_$:-35 yes__what:29 yet:28 yet_$:28
yo:-43 you:-74 you_$:-49 you__for:-32 you__it:-24 you__me:79 you__that:21 you__the:-23 you_be:58 you_charge:-23
you_find:52 you_get:-18 you_have:-25 you_need:-22 you_on:-19 you_tell:44 your:-65
"""
