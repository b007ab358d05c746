"""What speaks for and against `explain`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "explain"
BIAS = -170
WEIGHTS = """\
#abaj:-57 #aben:53 #aber:31 #abin:104 #able:-48 #abor:-55 #abou:-35 #abre:-22 #acei:-74 #acer:98 #acta:30 #actl:93
#addr:-38 #adel:-26 #adio:-23 #ados:65 #agai:41 #agar:-27 #agua:133 #ague:-24 #ahor:-29 #ails:73 #ains:24 #ajar:59
#akin:-30 #aler:-27 #ales:57 #algo:49 #alle:-75 #allp:-26 #ally:82 #alta:63 #amab:-28 #ance:-48 #anda:35 #ando:-44
#anej:98 #ange:77 #anol:24 #anta:86 #anto:62 #anua:56 #anyw:49 #apag:-23 #apid:-54 #appe:105 #apto:23 #aqui:-40
#arca:-65 #arda:-72 #arde:-31 #arge:-24 #argi:-32 #aron:51 #arou:-24 #arra:-27 #arzo:28 #asta:123 #asur:59 #ated:-39
#ater:-50 #atis:-75 #ator:71 #auto:-23 #avor:29 #back:-31 #bajo:-32 #ball:-26 #befo:64 #belt:66 #betw:-52 #bien:-41
#bina:27 #blem:57 #blig:77 #bout:-37 #bran:-65 #brea:56 #bren:-23 #brin:-64 #busi:-58 #cabi:104 #camb:30 #came:30
#caro:-47 #caso:23 #ccio:-41 #ceit:-74 #cesa:35 #cess:70 #chan:29 #char:-61 #cien:-22 #cier:-27 #cita:56 #clar:-27
#clos:-23 #cluy:53 #cobr:-23 #coge:-24 #come:56 #como:-105 #comp:-34 #cont:59 #cosa:50 #cost:-126 #coul:104 #crib:-45
#ctam:33 #ctly:93 #cual:71 #cuan:-61 #cuen:25 #cuer:35 #dado:-61 #dang:60 #days:-32 #ddre:-38 #debe:25 #deci:59
#deja:-27 #dejo:28 #depe:-28 #dias:-34 #dice:30 #dier:33 #digo:-43 #ding:-22 #dire:-39 #does:84 #doin:142 #dome:48
#dond:-50 #done:27 #down:54 #dres:-47 #driv:138 #dura:117 #eale:-24 #eall:92 #ease:39 #easu:59 #eavi:38 #ecci:-39
#eces:104 #ecir:69 #ecog:-25 #ecom:32 #eeds:72 #efor:64 #egas:30 #egoc:-50 #egre:-29 #egue:-32 #egui:64 #egur:28
#eite:-74 #ejan:62 #ejar:24 #elig:58 #else:24 #eman:-25 #emen:53 #emin:54 #empr:-32 #enco:77 #enda:23 #enga:-41
#engi:27 #engo:-49 #ensa:-25 #ensi:-22 #enta:26 #ente:47 #enti:33 #ento:24 #entr:-24 #epen:-29 #epla:57 #erar:69
#eras:72 #erda:96 #eren:77 #eria:-26 #erio:40 #eros:-57 #erou:54 #erpe:30 #erte:35 #ervi:27 #esar:22 #esas:26
#escr:-33 #esnt:-50 #espe:27 #essa:72 #esta:67 #este:-50 #esto:-82 #etal:22 #eter:40 #etti:23 #etwe:-52 #even:94
#ever:22 #exac:118 #exit:-47 #expe:-22 #expl:198 #exti:-27 #falt:65 #favo:29 #fere:26 #fica:47 #fill:26 #filt:111
#find:79 #firs:-35 #five:36 #flui:91 #flus:64 #fore:69 #foun:24 #four:66 #free:-108 #fron:51 #fuer:27 #gain:41
#game:24 #gara:-23 #gast:103 #gato:71 #gent:75 #gero:54 #gets:22 #gett:26 #gine:25 #gnif:44 #gnor:37 #goci:-50
#goin:-67 #gone:-26 #good:-24 #grat:-75 #grav:60 #gres:-29 #guan:139 #guen:-32 #guir:65 #guro:30 #hace:129 #hago:57
#hang:39 #happ:109 #hard:-36 #harg:-56 #hast:27 #have:33 #heel:-32 #hell:-23 #here:-34 #hese:48 #hich:40 #hing:84
#hist:25 #hone:30 #hora:-84 #hose:23 #houg:41 #houl:57 #hour:-49 #hurs:-29 #iaja:64 #ible:-27 #icam:39 #idea:-33
#iend:24 #iene:67 #iere:113 #iero:-32 #ific:46 #igam:35 #ight:-61 #igni:44 #igno:39 #igro:59 #iles:49 #ilte:76
#iltr:37 #incl:53 #insu:-28 #inte:48 #invo:47 #ious:39 #iqui:29 #irec:-39 #ires:35 #irst:-35 #irve:-65 #isen:-28
#jand:111 #just:-26 #kids:26 #king:-40 #labo:-55 #lain:83 #lama:-28 #lame:-42 #lant:-28 #laro:-38 #last:71 #late:-29
#ldnt:-22 #leak:-27 #leas:34 #leav:41 #left:72 #legu:-26 #lema:63 #lica:124 #life:66 #ligh:-37 #ligr:59 #line:-33
#liqu:35 #llam:-63 #llan:-27 #llas:34 #lleg:-33 #ller:-44 #llev:-22 #llow:31 #llpa:-26 #long:37 #look:22 #lpar:-26
#lter:69 #ltro:37 #luid:91 #lush:64 #luye:53 #mabl:-28 #make:84 #malo:135 #mana:-46 #mane:89 #mano:-23 #manu:58
#many:45 #maqu:-28 #marc:-73 #marz:28 #matt:-38 #mber:-77 #mbia:30 #meas:64 #meno:-36 #mens:-24 #ment:47 #mero:-54
#meta:22 #mete:39 #mien:53 #mile:58 #mind:47 #mism:-24 #more:87 #moun:24 #mpan:-33 #mpre:-32 #much:-102 #muer:29
#must:66 #nclu:53 #ncon:77 #nden:-35 #nece:127 #need:167 #nego:-50 #neja:100 #nger:74 #ngin:43 #nifi:44 #nigh:-28
#ning:-28 #noma:25 #nore:34 #norm:70 #nsaj:-23 #nsur:-28 #ntas:-30 #nter:54 #ntin:29 #nton:23 #ntra:49 #nual:58
#numb:-75 #nume:-44 #nven:24 #nver:37 #nywa:50 #oble:57 #obli:77 #obot:-28 #ocio:-53 #odom:49 #oesn:-50 #oger:-24
#oing:75 #oint:31 #oked:31 #oles:-25 #olve:26 #omas:34 #omet:48 #ompa:-28 #onde:-55 #ontr:60 #ooke:31 #oqui:30
#orio:73 #orma:64 #orri:32 #orro:23 #orse:33 #oser:-52 #otor:30 #otra:22 #otro:37 #ould:92 #ousl:-39 #over:-28
#pagu:-24 #pano:24 #pany:-25 #pape:28 #park:-31 #pasa:163 #pase:-28 #peli:59 #pend:-36 #pens:47 #pent:28 #pera:53
#pero:68 #phon:22 #pido:-57 #plai:83 #plea:37 #plic:122 #poco:29 #poin:24 #poqu:31 #ppen:113 #pren:-24 #pres:-26
#pric:-56 #prin:28 #prob:63 #pued:155 #pues:-41 #pull:-55 #push:29 #qued:86 #quic:-79 #quid:28 #quie:26 #quin:-29
#raba:-58 #rada:-25 #radi:-27 #rage:-22 #rake:26 #ranc:-34 #rand:-26 #rans:38 #rapi:-57 #raro:85 #rata:51 #rati:-79
#rato:-42 #rave:60 #rdad:30 #read:41 #reak:57 #real:65 #rear:41 #reat:-23 #recc:-36 #reci:-31 #reco:-22 #reet:-50
#regr:-29 #reme:44 #remi:54 #rend:-24 #repl:48 #resa:-49 #ress:-41 #rgen:83 #rgin:-32 #ribe:-27 #rice:-56 #ried:45
#ring:-31 #riou:39 #risk:26 #rive:114 #rivi:24 #rmal:70 #road:28 #robl:61 #robo:-30 #rong:91 #ront:70 #rose:-52
#roso:51 #rota:32 #rous:54 #rpen:30 #rran:-26 #rrie:34 #rsda:-23 #rtan:22 #ruid:-23 #rvic:27 #sabe:80 #safe:35
#saje:-30 #sali:-29 #sari:34 #sary:70 #says:70 #scam:-23 #scri:-45 #sday:-22 #segu:110 #self:-23 #sema:-27 #sens:23
#seri:38 #sero:-52 #serp:30 #serv:23 #shak:-22 #shee:27 #shin:28 #shop:-53 #shou:57 #sibl:-22 #sign:56 #sigo:64
#sirv:-65 #skip:30 #snow:-23 #sold:-26 #soon:60 #span:24 #sper:38 #spri:29 #ssar:70 #stad:81 #stan:43 #star:-28
#stop:-39 #stoy:-24 #stra:24 #stre:-51 #stuf:26 #supp:26 #sura:-28 #sure:30 #tado:61 #tain:23 #take:-50 #tall:-58
#tamb:-24 #tame:26 #tant:34 #tard:-101 #tech:49 #tell:62 #teng:-82 #text:-66 #that:119 #them:132 #then:56 #ther:-34
#thes:48 #they:218 #thin:69 #this:47 #thos:28 #thou:28 #thur:-32 #tien:45 #time:-134 #tine:30 #tire:44 #toca:38
#todo:-23 #toma:-37 #toni:23 #tori:70 #town:-22 #trab:-53 #trad:-25 #tran:56 #trar:77 #tras:36 #trat:50 #trea:45
#tree:-52 #trip:39 #tter:-37 #tuff:26 #turn:-25 #twee:-52 #uand:-95 #uant:172 #ueda:74 #uede:44 #uedo:115 #uego:-31
#uent:22 #uerd:35 #uert:26 #uick:-79 #uien:-61 #uier:71 #uina:-30 #uito:27 #uldn:-22 #ulls:-38 #umbe:-75 #umbo:-27
#umer:-44 #uran:79 #urge:44 #ursd:-23 #usan:-71 #ushi:24 #usly:-39 #uste:-27 #vece:-23 #vega:30 #vent:36 #vera:83
#verd:102 #viaj:81 #vice:36 #vida:47 #vien:31 #ving:32 #vise:-26 #volv:25 #wait:69 #wall:-22 #week:-24 #ween:-52
#were:26 #what:205 #whee:-32 #when:-133 #whic:41 #wifi:-73 #will:83 #wint:44 #with:65 #wont:-35 #work:-22 #worn:26
#worr:55 #woul:-67 #wron:91 #xact:118 #xpla:45 #xpli:153 #xtin:-27 #your:-59 #yway:50 %again_later:100
%again_later%call_off:-36 %again_later%car:-27 %again_later%car_part:-22 %again_later%do_it:29
%again_later%elsewhere:51 %again_later%how_long:41 %again_later%lift:122 %again_later%meaning:76
%again_later%money:-63 %again_later%odometer:-23 %again_later%place:-26 %again_later%season:61
%again_later%shift_it:23 %agree:-27 %agree%away:26 %agree%call_off:108 %agree%car:42 %agree%car_part:26
%agree%do_it:35 %agree%gone_car:24 %agree%how_long:-62 %agree%meaning:49 %agree%money:74 %agree%place:76
%agree%question:28 %agree%refuse:-26 %agree%season:37 %agree%shift_it:39 %agree%wrong_one:25 %away%call_off:44
%away%car:32 %away%car_part:24 %away%odometer:44 %away%on_way:54 %away%place:40 %away%refuse:-30
%away%start_again:-22 %bad%car:-27 %bad%car_part:-35 %bad%do_it:-25 %bad%leak:-23 %bad%meaning:-24 %bad%place:70
%bad%question:113 %bad%refuse:-28 %bring:-55 %bring%call_off:-32 %bring%do_it:-28 %bring%leave_me:-28
%bring%meaning:33 %bring%money:-31 %bring%odometer:-26 %bring%question:53 %bring%shift_it:-58 %busy:-76
%call_off%do_it:-44 %call_off%lift:33 %call_off%meaning:75 %call_off%message:-43 %call_off%odometer:-71
%call_off%refuse:-64 %call_off%season:33 %call_off%start_again:35 %call_off%thanks:41 %car%gone_car:-24
%car%how_long:-27 %car%lift:-41 %car%meaning:24 %car%odometer:22 %car%question:83 %car%refuse:22 %car%season:22
%car_part:53 %car_part%do_it:-39 %car_part%fails:-49 %car_part%gone_car:-40 %car_part%leak:-35 %car_part%machine:-25
%car_part%money:-71 %car_part%noise:-53 %car_part%odometer:27 %car_part%on_way:48 %car_part%pay_day:-29
%car_part%place:31 %car_part%question:209 %car_part%refuse:51 %car_part%shake:-53 %car_part%start_again:42 %do_it:-39
%do_it%elsewhere:-33 %do_it%leak:-28 %do_it%lift:-36 %do_it%question:169 %do_it%refuse:121 %do_it%staff:84
%do_it%start_again:42 %doubt%question:-24 %elsewhere:-109 %elsewhere%pay_day:44 %elsewhere%place:-23
%elsewhere%question:-111 %elsewhere%season:56 %elsewhere%shift_it:62 %elsewhere%wrong_one:23 %fails:40
%fails%how_long:87 %fails%question:137 %family:-50 %gone_car:-120 %gone_car%money:-37 %gone_car%phone:25
%gone_car%question:-28 %how_long:-258 %how_long%lift:59 %how_long%meaning:23 %how_long%opening:-26
%how_long%question:-110 %how_long%refuse:-67 %how_long%season:36 %how_long%staff:22 %leak:-45 %leave_me:-74
%leave_me%meaning:29 %leave_me%question:-77 %lift:46 %lift%meaning:25 %lift%money:-33 %lift%on_way:-23
%lift%pay_day:27 %lift%question:-55 %lift%season:63 %machine:-54 %machine%refuse:76 %machine%staff:-25 %meaning:481
%meaning%money:-26 %meaning%on_way:-26 %meaning%phone:-57 %meaning%place:23 %meaning%question:315 %meaning%refuse:34
%meaning%season:22 %meaning%shift_it:29 %meaning%staff:24 %meaning%thanks:32 %message:-111 %message%question:-56
%message%refuse:-34 %money:-255 %money%place:157 %money%question:-171 %money%refuse:-27 %money%shift_it:-34
%noise:-25 %noise%refuse:-23 %odometer%question:33 %odometer%refuse:27 %on_way:-44 %on_way%place:60
%on_way%question:61 %opening:-93 %opening%question:-82 %pay_day:-60 %pay_day%question:-64 %pay_day%shift_it:47
%phone:-132 %phone%question:-33 %phone%shift_it:-26 %place:-97 %place%question:-83 %question:304 %question%refuse:52
%question%season:-37 %question%shake:-34 %question%shift_it:-78 %question%staff:89 %question%thanks:-38
%question%who:-158 %question%wrong_one:74 %refuse:-40 %refuse%staff:22 %refuse%start_again:-42 %refuse%thanks:26
%season:70 %season%shift_it:58 %shake:-57 %shift_it%wrong_one:24 %smoke_smell:-26 %start_again:27 %thanks:-54
%who:-143 %wrong_one:-80 @?:206 @after_visit:-29 @car:-64 @confirm:-70 @confirm_stop:-157 @odometer:53 @offers:-31
@reading:-67 @time:-76 @times:-66 @walk_in:-37 ^_a:-30 ^_aguanta:100 ^_ballpark:-26 ^_cada:25 ^_can:92 ^_car:-28
^_claro:-41 ^_could:94 ^_cual:29 ^_cuando:-28 ^_cuanto:91 ^_de:137 ^_depends:-25 ^_do:117 ^_doesnt:-49 ^_el:-68
^_es:40 ^_esta:56 ^_estan:-26 ^_front:22 ^_got:-25 ^_hay:40 ^_hello:-23 ^_how:39 ^_i:-135 ^_is:135 ^_it:-141 ^_lo:-78
^_need:-57 ^_no:30 ^_not:-67 ^_odometer:41 ^_para:53 ^_pero:26 ^_por:66 ^_puede:24 ^_puedo:148 ^_pues:-28 ^_que:24
^_quiero:-23 ^_se:34 ^_should:61 ^_si:-116 ^_sure:-22 ^_that:-77 ^_tienen:-23 ^_tire:-22 ^_top:30 ^_what:-173
^_when:-34 ^_which:41 ^_who:-22 ^_why:143 ^_will:84 ^_y:39 ^_ya:-72 ^_yes:-36 ^_yo:-30 a:57 a__carro:28 a__filter:64
a__of:-29 a__off:-32 a__thing:-28 a__to:23 a_cabin:70 a_car:23 a_hacer:85 a_que:-43 a_rip:-43 a_serpentine:23
about:-43 about_$:-63 about_it:35 abren:-22 aceite:-80 acuerdo:26 address:-38 address_$:-28 adelante:-23 again:34
again_$:52 aguanta:123 ahi:-40 ahi_$:-29 ahora:-22 algo:56 all:42 all_day:-45 am:62 am_i:46 amables:-24 an:-57
an__day:-27 an_all:-30 an_hour:-42 and:91 and__it:43 and__much:34 and_how:26 and_is:28 and_it:-23 and_what:27
and_why:58 andar:27 anyway:50 anyway_$:50 appointment_$:-28 appointment_for:22 are:60 are__doing:41 are_they:88
are_we:35 are_you:-45 asi:143 asi_$:149 asi_que:-24 at_that:25 at_the:-22 back:-30 bad:-27 ballpark:-26
ballpark_$:-23 be:-29 be_$:-74 be__to:36 be_doing:81 before:64 before_it:86 belt:58 between:-52 between_and:-23
brake_$:-26 brake__flush:25 brake_fluid:26 brakes:38 brakes_$:31 brakes_are:-23 brand:-37 break:57 bring:-51 buen:-23
but_what:33 cabin:77 cabin_filter:68 cabina:27 can:161 can__drive:102 can__get:28 can__wait:132 can_i:127 can_it:107
can_you:-34 car:-29 caro:-44 carro_$:35 caso:23 charging:-32 cita:54 claro:-36 claro__si:-33 claro_que:-33 close:-22
cobran:-25 come:71 come_$:105 come_to:-28 como:-105 como__que:51 company:-25 con:-32 cosa:55 cosa_$:33 cost:-109
cost_$:-58 cost_me:-27 could:107 could_you:89 creo_que:-25 cual__el:59 cual__la:-25 cuando:-95 cuando_freno:-25
cuando_lo:-24 cuanto:53 cuanto__me:98 cuanto_es:-31 cuanto_mas:119 cuanto_me:-45 cuanto_por:-31 dan:-56 dangerous:58
dangerous_$:31 dangerous_to:27 day:-70 day_$:-37 days:-28 de:93 de__a:22 de__cita:26 de__lo:51 de__me:29 de__o:35
de_a:24 de_la:38 de_llantas:-59 de_que:57 de_veras:56 de_verdad:79 de_vida:56 deal:30 decir:63 decir_$:56 dejo:29
del:30 depends:-25 desde_que:-22 dia:-69 dia_$:-55 dias:-34 did:81 did__find:72 did_it:-31 did_the:39 did_you:81
digame:35 digo:-36 direccion:-36 direccion_$:-26 do:95 do__charge:-29 do__get:-46 do__need:152 do__use:-30 do_i:76
do_it:-71 do_they:39 do_this:44 do_you:-70 does:134 does__get:22 does__take:-32 does_that:74 doesnt:-50
doesnt_matter:-54 doing:142 doing_$:66 doing__it:59 doing_to:59 donde:-48 donde_es:-27 donde_estan:-22 done:27
done_$:26 down:64 down_for:23 down_on:57 drive:141 drive_it:53 drive_to:61 driving:24 drop:-26 due:70 due_for:34
el:-84 el__mes:-30 el__que:-54 el_otro:-24 el_que:-39 else:26 en_cuanto:-24 en_el:42 encontraron:77 engine:31
entra:-25 era:37 es:247 es_$:-143 es__de:29 es__o:26 es__que:82 es__y:32 es_de:56 es_el:51 es_eso:124 es_este:-40
es_gratis:-71 es_grave:27 es_lo:53 es_malo:77 es_mi:-24 es_muy:24 es_normal:41 es_peligroso:51 es_que:-54
es_rapido:-23 es_un:26 es_una:-33 es_urgente:29 es_y:27 esa:34 esas:27 ese:59 ese_servicio:55 eso:284 eso_$:70
eso__que:34 eso_de:42 eso_del:47 eso_que:29 eso_y:28 eso_ya:-24 espanol:24 esperar:63 esperar_$:48 esta:77 esta_$:23
esta_muy:71 estan:43 este:-59 este_$:-37 esto:-46 esto_$:-45 estoy:-23 even:96 even__a:28 even_is:34 exactamente:33
exactamente_$:29 exactly:93 exactly_$:29 exactly__you:26 exit:-47 explain:50 explica:98 falta:75 falta_$:35 favor:34
favor_$:52 filter:74 filter_$:56 filtro:40 find:58 first:-35 five:36 five_$:25 fix:-33 fix_it:-29 fluid:84 fluid_$:26
fluid_flush:22 flush:64 flush_$:38 for:39 for_$:111 for_a:-24 for_it:-39 for_what:27 found:24 four:66 four_$:64
free:-114 free_$:-97 freno:-57 freno_$:-43 frenos:49 frenos_$:54 friday__do:24 front:51 fue:69 fue__que:57 fue_lo:57
get:-49 get_to:-24 gets:22 getting:26 go_for:-27 going:-67 going__be:-36 going__cost:-34 going_to:-66 gone:-26
good:-23 got:-22 gratis:-75 gratis_$:-70 grave:60 hace:29 hace_$:31 hace_falta:28 hacer:107 hacer_$:44 had:-29
hago:57 hago_$:50 happen:37 happens:80 happens__i:83 happens_if:83 hard:-22 has:-26 hasta:27 hasta_que:-51 have:27
have__do:109 have_it:-22 have_to:76 hay:25 hay_que:-27 hello:-23 hicieron_$:-22 hora:-33 hour:-44 how:68 how__are:65
how__can:85 how__does:-32 how__for:-57 how__i:-105 how__is:-59 how__to:-35 how__will:-28 how__you:-27 how_come:105
how_do:-33 how_low:50 how_many:46 how_much:-104 hoy:-46 hoy_mismo:-22 i__a:-24 i__all:63 i__an:22 i__have:49 i__it:56
i__need:78 i__on:120 i__out:23 i__the:-26 i__there:-23 i__these:-37 i__to:-117 i__you:-43 i_be:50 i_can:-28
i_come:-28 i_drive:73 i_get:-22 i_go:57 i_know:-26 i_mean:-41 i_need:45 i_owe:-24 i_skip:32 i_thought:25 i_wait:33
i_was:-44 idea:-33 idea_$:-26 if:126 if__just:23 if__skip:32 if_i:118 ill:-33 im:26 im__on:36 in:-48 in_$:-25
incluye:55 insurance:-28 is:105 is__a:58 is__about:-63 is__address:-36 is__an:-27 is__appointment:29 is__bad:68
is__cabin:59 is__cost:-36 is__dangerous:49 is__do:57 is__for:73 is__free:-70 is__going:-32 is__labor:-42 is__like:-37
is__oil:-41 is__ok:77 is__on:56 is__price:-43 is__really:-49 is__run:-145 is__safe:42 is__something:38 is__thing:28
is__wait:-48 is__wifi:-53 is__with:70 is_a:135 is_due:31 is_fine:-35 is_for:45 is_it:134 is_leaking:-22 is_that:107
is_the:-142 is_this:-53 is_what:-28 is_wrong:72 is_your:-55 it:160 it_$:-54 it__a:-23 it__all:-35 it__an:-40
it__done:-29 it__for:49 it__free:-38 it__in:-27 it__is:57 it__it:50 it__like:-22 it__that:65 it__this:41 it__to:69
it_a:42 it_an:-30 it_back:-26 it_bad:45 it_be:-57 it_cost:-39 it_dangerous:34 it_do:28 it_down:23 it_is:-122
it_need:29 it_now:41 it_ok:73 it_really:-32 it_safe:42 it_take:-39 it_to:65 it_wait:106 it_what:26 just:-26 k:58
k_$:45 kids:26 know__is:25 know_it:25 know_you:-23 la:-74 la__de:-40 la_cita:75 la_direccion:-22 la_luz:-24 labor:-55
labor_$:-37 las:-45 last:65 later:-26 le:219 le__a:117 le_digo:-24 le_falta:50 le_hacen:41 le_pasa:43 le_toca:47
le_van:83 leaving:38 left:72 left_on:67 les:83 let:-23 life:49 light:-24 light__on:-24 like_an:-39 liquido:30
llamen:-24 llamen_$:-23 llantas_$:64 lo:66 lo__le:22 lo__pronto:-24 lo_dejo:34 lo_hago:61 lo_mas:-30 lo_necesito:56
long:30 long__i:61 long__it:54 long_do:-28 long_does:-36 long_will:-25 look:28 los:-29 low:101 low_$:30 luz:-26
make:90 make__to:84 make_it:104 mal:88 mal_$:148 malo:127 manejando:100 manejar:31 manual:58 many:45 maquina:-28
marca:-57 marzo:28 mas:41 mas_pronto:-25 mas_tarde:-23 matter:-41 me_$:-33 me__it:28 me__por:67 me_acuerdo:28
me_back:-33 me_explica:98 me_llamen:-23 me_lo:-48 me_paguen:-24 me_puede:29 me_sirve:-58 me_urge:-49 me_what:79
menos:-36 mensaje:-25 mes:44 mes_$:40 metal:22 mi:-86 mi_carro:28 mientras:38 mil:24 miles:49 mis:45 mm:53 more:98
more_$:79 much:-115 much__it:-49 much_for:-46 much_is:-68 much_to:-37 must:66 muy:61 muy_mal:47 my:-56 my_brakes:25
necesario:35 necesito_$:66 necesito__me:-24 necesito_que:-25 necessary:70 necessary_$:70 need:111 need__bring:-30
need__for:-57 need__oil:43 need_a:-31 need_an:37 need_that:59 need_to:-96 needs:73 needs_to:38 negocio:-50 new:-36
next_to:23 ni:-27 no:-35 no_$:-81 no__acuerdo:28 no__hago:68 no__is:57 no__necesario:-43 no_es:-40 no_lo:43
no_para:-32 no_what:87 noise:23 nomas:25 normal:62 not:-254 not_$:-175 now:121 now_$:92 number:-87 number_$:-43
number__this:-23 number_is:-29 numero:-37 numero_es:-26 o:218 o_es:62 o_que:39 ocupo:-24 odometer:49 of__do:-35
of_oil:-35 of_them:31 off_of:29 oil:-46 ok:83 ok__drive:75 ok__it:-28 ok_to:97 on:144 on_$:-53 on__list:30
on__road:39 on_me:58 on_my:34 one_$:27 or:106 or_$:-28 or__that:25 or_is:37 or_no:31 or_the:35 other:25 otra:23
otro:38 otro_mes:45 owe:-24 paguen:-24 paper:23 para:36 para__es:62 para__lo:37 para__no:-33 para__quieren:42
para__sirve:33 para_cuando:-27 para_que:115 pasa:153 pasa__no:60 pasa_si:95 peligroso:51 pero:67 pero__es:33
pero__que:33 pero_que:68 person:23 pie:23 place:-38 please:42 please_$:28 poco:23 point:23 poquito:31 por:53
por__no:-43 por_favor:40 por_que:115 price:-51 price_on:-33 problema:70 puede:62 puede_esperar:47 puedo:138
puedo__hoy:-22 pues:-27 pulls:-38 que:59 que_$:-96 que__abren:-22 que__caro:-42 que__con:-23 que__de:-58
que__decir:70 que__en:39 que__es:-105 que__ese:62 que__eso:146 que__estan:-34 que__hacen:30 que__hicieron:29
que__le:74 que__llamen:-23 que__lo:86 que__mal:69 que__malo:47 que__me:-29 que__por:-25 que__que:-25 que__si:89
que__toca:39 que__un:31 que__van:90 que_cobran:-22 que_entra:-23 que_era:44 que_es:338 que_fue:68 que_hora:-37
que_incluye:55 que_la:-26 que_le:251 que_me:-83 que_no:-126 que_numero:-26 que_pasa:95 que_quiere:70 que_quieren:42
que_sea:-29 que_si:-69 que_significa:33 que_sirve:33 que_taller:-24 que_tan:176 que_tiene:85 que_va:-29 queda:92
queda_$:87 quedo:-23 quick:-75 quick_$:-41 quien:-44 quien_es:-50 quiere:60 quiere_decir:70 quieren:54 quiero:-28
quiero_que:-26 radio:-23 rapido:-53 rato:-39 real:-27 really:92 really_free:-36 rear:37 rear_$:22 remind:61
remind__what:76 remind_me:63 right_now:33 rip:-43 road:31 road_trip:41 robot:-28 robot_$:-27 rumbo:-27 run:-222
run_$:-155 run_me:-59 saben:54 saber:30 safe:41 safe_to:35 says:70 se:26 sea:-31 see:-48 see__my:-39 seguir:65
seguro:30 semana:-30 serious:81 serious_$:59 serpentine:30 serpentine_belt:30 service:40 set:-48 set__back:-29
set_me:-30 shop:-60 shop__this:-22 shop_is:-31 should:53 should__be:53 should_i:54 si:76 si_$:-57 si__dejo:38
si__lo:58 si__que:-40 si_lo:96 si_me:-31 si_no:86 significa:44 sigo:65 sirve:-44 sirve_$:-47 skip:30 so:85 so__is:32
so_soon:60 so_what:37 sold:-26 something_that:27 soon:71 speak:-27 spring:29 spring_$:22 still:-22 stop:-34
stop_$:-24 street:-50 street_$:-33 stuff:26 sure:-22 take:-49 take_$:-42 taller:-40 tambien:-24 tan:251 tan__esta:44
tan__estan:88 tan_caro:-41 tan_grave:30 tan_mal:79 tan_malo:46 tarde:-27 te:-22 tech:51 tell:66 tell_me:67 tengo:-48
tengo_que:-43 text:-24 texting:-26 that:119 that_$:58 that__do:30 that_a:30 that_and:27 that_be:-47 that_is:-50
that_it:25 that_service:24 that_the:27 the:84 the__are:-31 the__if:22 the__is:33 the__on:-31 the__one:33 the__or:29
the__says:35 the__thing:49 the__with:35 the_belt:35 the_other:34 the_price:-33 the_tech:53 the_thing:57 the_tires:84
the_wait:-50 the_winter:56 them:132 them_$:115 then:56 then_$:45 there:-22 there_$:-34 these:48 these_$:75 they:213
they_$:73 they__the:51 thing:56 thing_$:-26 this:47 this_$:-83 this__for:53 this_about:-69 this_number:-39 those:28
though:27 though_$:27 thursday:-23 tiene:57 tiene_$:70 tienen_$:-32 til:24 time:-138 time__it:-35 time__you:-26
time_do:-29 tirado:22 tires:49 tires_$:31 to:90 to_$:-36 to__and:23 to__me:-58 to__this:37 to__to:47 to_bring:-40
to_cost:-34 to_do:97 to_drive:98 to_fix:-31 to_it:62 to_know:24 to_my:-25 to_see:-28 to_you:-24 toca:46 toca_$:31
today_$:-25 too:-24 too_$:-27 top:49 top_off:52 trabajo:-33 tread:55 trip:41 un_poquito:24 una:-27 under:-23 up_$:-22
urge:-35 urgent:30 urgent_$:27 urgente:52 use:-53 va:-71 va_$:-26 va_a:-22 van:80 van__hacer:71 van_a:93 veces:-23
vegas:30 vegas_$:32 veras:56 verdad:90 vida:50 viene:36 viernes__de:24 wait:53 wait_for:-25 wait_on:29 wait_til:28
was:62 was_the:98 week:-33 were:26 what:210 what__a:118 what__if:83 what__it:62 what__that:-64 what__the:-22
what__this:-39 what__wrong:76 what__you:112 what__your:-58 what_a:-59 what_about:-44 what_am:36 what_company:-24
what_did:167 what_do:-62 what_does:120 what_else:22 what_exactly:55 what_for:50 what_happens:82 what_i:-33
what_my:-33 what_needs:57 what_street:-37 what_this:36 what_time:-97 what_was:125 what_would:-76 wheel:-27 when:-130
when_i:-73 where__the:25 which:42 which__are:26 which__do:-26 which__is:-65 which_exit:-47 which_shop:-33 who:-49
who__this:-31 who_is:-41 why:284 why_$:64 why__i:46 why__it:67 why__you:44 why_do:85 why_does:46 why_is:60
why_not:-176 why_would:65 wifi:-73 wifi_$:-57 will:83 will__be:-25 will_it:22 will_the:42 winter:44 winter_$:57
with:73 with_it:45 with_my:22 with_the:32 wont:-35 worn:26 worse:23 would:-42 would__need:43 would_that:-69
would_you:69 wouldnt:-24 wrong:91 wrong_with:85 y:145 y__de:26 y__que:62 y_cuanto:30 y_de:26 y_eso:43 y_para:30
y_por:28 y_que:48 ya:-127 ya_$:22 ya_esta:-42 ya_que:-26 yes:-83 yes_$:-46 yes__what:37 yes_i:-24 yet:41 yet_$:41
yo:-57 you:-94 you_$:-69 you__for:-42 you__it:-37 you__me:110 you__on:-22 you__that:28 you__the:-33 you_be:82
you_charge:-31 you_find:70 you_get:-25 you_have:-34 you_need:-37 you_on:-23 you_tell:62 your:-77
"""
