"""What speaks for and against `explain`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "explain"
BIAS = -145
WEIGHTS = """\
#abaj:-44 #aben:38 #abin:81 #able:-19 #abor:-48 #abou:-30 #abre:-21 #acei:-63 #acer:71 #acin:25 #acta:28 #actl:69
#acue:18 #addr:-27 #ados:63 #afte:-27 #agai:19 #agar:-24 #agua:78 #ague:-21 #ahor:-21 #ails:63 #ains:18 #ajar:49
#akin:-36 #ales:53 #algo:27 #alle:-61 #allp:-18 #ally:59 #alta:35 #amab:-24 #ance:-42 #anda:42 #ando:-30 #anej:72
#aner:-18 #ange:72 #angi:19 #anol:27 #anta:67 #anto:52 #anua:38 #anyw:54 #apag:-24 #apid:-42 #appe:82 #apto:26
#aqui:-39 #arca:-56 #arda:-63 #arde:-22 #argi:-25 #arla:21 #arlo:-21 #aron:30 #arra:-19 #asta:106 #asur:49 #atan:-18
#ated:-31 #ater:-29 #atio:-26 #atis:-63 #ator:61 #atte:-48 #avin:19 #avor:20 #bajo:-27 #befo:57 #belt:43 #betw:-33
#bien:-25 #blem:68 #blig:66 #bout:-31 #brak:25 #bran:-52 #brea:38 #bren:-22 #brin:-50 #busi:-50 #cabi:81 #cada:23
#cale:18 #cant:-24 #caro:-45 #caso:23 #ccio:-28 #ceit:-63 #cesa:26 #cesi:22 #cess:81 #chan:35 #char:-39 #chec:-31
#ciem:20 #cien:-22 #cing:25 #cion:-19 #cita:40 #cluy:42 #cobr:-18 #coge:-23 #come:69 #como:-84 #cont:38 #cosa:43
#cost:-86 #coul:75 #crib:-34 #ctam:29 #ctly:69 #cual:61 #cuan:-59 #cuen:19 #cuer:35 #dado:-58 #dang:41 #days:-20
#ddre:-27 #deci:62 #dejo:20 #depe:-22 #desd:-19 #dias:-24 #dier:27 #digo:-26 #ding:-19 #dire:-27 #does:70 #doin:133
#dome:41 #dond:-36 #done:31 #down:53 #dres:-35 #driv:89 #drop:-20 #dura:110 #eady:-22 #eaki:-18 #eall:78 #ease:30
#easu:49 #eavi:38 #ecci:-27 #eces:111 #ecir:69 #ecks:-19 #ecog:-22 #ecue:18 #eeds:65 #efor:57 #egas:25 #egoc:-46
#egre:-27 #egue:-23 #egui:52 #egur:25 #eite:-63 #ejan:43 #ejar:22 #elig:47 #eman:-26 #emen:52 #emin:43 #empr:-21
#enco:69 #ends:-22 #enga:-29 #engi:18 #engo:-45 #ensa:-28 #ensi:-20 #ente:52 #enti:29 #epen:-23 #epla:48 #erar:60
#eras:65 #erda:95 #erdi:21 #eren:69 #erio:40 #eros:-53 #erou:41 #erpe:25 #erte:27 #ervi:26 #erza:18 #esas:18
#escr:-22 #esde:-19 #esit:21 #esnt:-46 #espa:26 #espe:34 #essa:78 #esta:51 #este:-41 #esto:-69 #etal:24 #eter:32
#etti:24 #etwe:-33 #even:59 #ever:37 #exac:97 #exit:-40 #expe:-19 #expl:165 #exti:-21 #falt:37 #favo:19 #fere:21
#fica:42 #fill:20 #filt:96 #find:61 #fini:-18 #firs:-19 #five:37 #flui:56 #flus:62 #fore:65 #four:60 #free:-91
#fron:42 #fter:-27 #fuer:21 #gain:19 #gast:89 #gato:61 #gent:67 #gero:41 #gett:24 #gnif:39 #gnor:32 #goci:-46
#goin:-35 #grat:-64 #grav:46 #gres:-27 #guan:96 #guen:-27 #guro:23 #hace:91 #hago:50 #hang:46 #happ:86 #hard:-26
#harg:-36 #harm:23 #hast:23 #have:35 #heck:-30 #heel:-25 #hell:-21 #here:-24 #hese:39 #hich:32 #hing:73 #hold:-20
#hora:-50 #houg:51 #houl:35 #hour:-33 #hurs:-18 #ible:-25 #idea:-33 #iend:19 #iene:62 #ient:22 #iere:105 #iero:-22
#ific:41 #igam:22 #ight:-33 #igni:39 #igno:34 #igro:48 #iles:36 #illa:20 #ilte:68 #iltr:30 #incl:42 #init:-18
#insu:-22 #inte:47 #invo:44 #ious:38 #irec:-27 #ires:38 #irst:-19 #irve:-60 #isen:-20 #jand:87 #just:-28 #keep:21
#kids:19 #king:-44 #labo:-48 #laci:24 #lain:75 #lama:-19 #lame:-30 #laro:-31 #last:40 #late:-39 #ldnt:-25 #leak:-22
#leas:24 #leav:30 #left:55 #legu:-19 #lema:61 #leva:-19 #lica:100 #life:46 #ligr:48 #line:-23 #liqu:22 #llam:-46
#llas:40 #lleg:-20 #ller:-32 #llow:21 #llpa:-18 #long:18 #lpar:-18 #lter:61 #ltro:30 #luga:-18 #luid:56 #lush:62
#luye:42 #mabl:-24 #make:61 #malo:96 #mana:-35 #mane:68 #mano:-21 #many:27 #maqu:-27 #marc:-63 #matt:-44 #mber:-56
#mbie:-21 #meno:-20 #mens:-26 #ment:59 #mero:-42 #meta:24 #mete:34 #metr:18 #mien:51 #mile:38 #mind:38 #mine:-22
#more:84 #mpan:-22 #mpor:19 #mpre:-18 #much:-81 #muer:25 #must:55 #nclu:42 #ncon:68 #ndar:24 #nden:-24 #nece:129
#need:145 #nego:-46 #neja:75 #next:-20 #nged:24 #nger:49 #ngin:37 #nifi:39 #nigh:-24 #nite:-18 #noma:20 #nore:30
#norm:44 #nsaj:-25 #nsur:-22 #ntas:-18 #nter:55 #nths:20 #ntin:24 #ntra:57 #numb:-55 #nume:-39 #nver:30 #nywa:54
#oble:55 #obli:66 #obot:-23 #obra:-21 #ocio:-46 #oday:-19 #odom:42 #odos:-19 #oesn:-46 #oger:-23 #oing:98 #oint:34
#olve:27 #omas:20 #omet:38 #onde:-40 #onto:20 #ontr:46 #open:-29 #oqui:23 #orio:62 #orma:39 #orri:32 #orro:25
#orse:29 #orta:27 #oser:-48 #otor:22 #otro:34 #ough:33 #ould:48 #ousl:-39 #over:-20 #pagu:-21 #pano:27 #para:25
#park:-18 #pasa:117 #pass:-23 #peak:-18 #peli:48 #pend:-27 #pens:42 #pent:24 #pera:55 #pero:45 #pido:-46 #plac:20
#plai:75 #plea:28 #plic:99 #poco:26 #poin:25 #poqu:24 #ppen:89 #prec:-19 #pres:-18 #pric:-44 #prin:22 #prob:64
#pron:20 #pued:126 #pues:-42 #pull:-47 #push:26 #quea:-18 #qued:61 #quic:-68 #quin:-29 #raba:-46 #radi:-21 #rake:29
#ranc:-26 #rans:28 #rapi:-45 #raro:69 #rata:39 #rati:-67 #rato:-33 #rave:46 #rdad:32 #reak:38 #real:54 #rear:20
#recc:-25 #reci:-26 #reco:-29 #recu:18 #reet:-38 #regr:-27 #reme:47 #remi:43 #repl:38 #resa:-34 #ress:-27 #rgen:72
#rgin:-25 #ribe:-21 #rice:-44 #ried:44 #ring:-36 #riou:38 #rive:95 #rmal:44 #road:31 #robl:59 #robo:-22 #rong:80
#ront:62 #rose:-47 #roso:40 #rota:28 #rous:41 #rpen:25 #rran:-22 #rrie:34 #rtan:25 #rvic:26 #sabe:41 #safe:19
#saje:-25 #sari:26 #sary:81 #savi:-18 #says:42 #scri:-34 #segu:93 #self:-19 #sema:-26 #seri:38 #sero:-47 #serp:25
#serv:23 #shak:-18 #shin:32 #shop:-33 #shou:35 #sibl:-21 #sien:21 #sign:47 #sigo:58 #sirv:-60 #skip:28 #some:-18
#soon:43 #span:27 #spea:-18 #sper:39 #spri:23 #stad:66 #stan:36 #star:-21 #stee:-18 #stop:-44 #stoy:-21 #stra:18
#stre:-39 #supp:18 #sura:-22 #sure:27 #tado:58 #take:-49 #tall:-44 #tame:24 #tand:-18 #tant:29 #tard:-84 #tech:35
#tell:82 #tely:-18 #tend:19 #teng:-69 #text:-51 #that:74 #them:108 #then:24 #ther:-37 #thes:39 #they:163 #thin:39
#this:38 #thou:41 #thur:-21 #tiem:-30 #tien:43 #time:-128 #tine:25 #tire:40 #toca:51 #toda:-26 #todo:-22 #toma:-32
#toni:26 #tori:59 #trab:-41 #tran:42 #trar:69 #tras:45 #trat:38 #trea:33 #tree:-39 #trip:39 #tter:-62 #tues:-19
#turn:-34 #tuve:-18 #twee:-33 #uand:-79 #uant:114 #ucho:18 #ueda:53 #uede:32 #uedo:96 #uego:-23 #uent:19 #uerd:36
#uert:21 #uerz:18 #ugar:-18 #uick:-68 #uien:-59 #uier:67 #uina:-30 #uito:20 #uldn:-25 #ulls:-34 #umbe:-55 #umer:-39
#uran:79 #urge:28 #usan:-64 #ushi:23 #usly:-39 #uste:-31 #vale:-18 #vece:-18 #vega:25 #vera:65 #verd:103 #viaj:60
#vice:28 #vida:32 #vien:25 #vise:-19 #vola:-23 #volv:26 #wait:57 #week:-32 #ween:-33 #what:149 #whee:-25 #when:-95
#whic:32 #wifi:-62 #will:66 #wint:46 #with:49 #wont:-26 #work:-19 #worn:26 #worr:54 #wors:18 #woul:-59 #wron:80
#xact:97 #xpla:35 #xpli:129 #xtin:-21 #your:-32 #yway:54 %again_later:60 %again_later%bring:-35 %again_later%car:-29
%again_later%car_part:-18 %again_later%do_it:21 %again_later%elsewhere:39 %again_later%how_long:38
%again_later%lift:101 %again_later%meaning:57 %again_later%money:-73 %again_later%odometer:-24 %again_later%season:60
%agree:-31 %agree%call_off:69 %agree%how_long:-33 %agree%meaning:42 %agree%money:54 %agree%place:57
%agree%question:47 %agree%season:22 %agree%shift_it:28 %agree%wrong_one:39 %away:-19 %away%call_off:19
%away%odometer:40 %away%on_way:47 %away%place:33 %away%refuse:-31 %bad%busy:-20 %bad%car:-30 %bad%car_part:-48
%bad%do_it:-27 %bad%fails:-25 %bad%leak:-23 %bad%meaning:-21 %bad%noise:-18 %bad%phone:18 %bad%place:58
%bad%question:94 %bad%refuse:-44 %bad%who:21 %bring:-57 %bring%call_off:-45 %bring%car_part:-29 %bring%do_it:-37
%bring%leave_me:-41 %bring%money:-25 %bring%question:47 %bring%shift_it:-57 %bring%start_again:-32 %busy:-72
%busy%do_it:-19 %busy%question:-24 %call_off%car:-37 %call_off%car_part:25 %call_off%do_it:-33 %call_off%leave_me:-18
%call_off%lift:22 %call_off%meaning:47 %call_off%message:-43 %call_off%money:-25 %call_off%odometer:-49
%call_off%question:31 %call_off%refuse:-59 %call_off%season:19 %call_off%start_again:32 %call_off%thanks:44
%call_off%wrong_one:19 %car:22 %car%lift:-35 %car%meaning:19 %car%question:72 %car%refuse:34 %car%staff:18
%car_part:38 %car_part%do_it:-24 %car_part%gone_car:-20 %car_part%how_long:-19 %car_part%leak:-29
%car_part%machine:-24 %car_part%meaning:-20 %car_part%money:-48 %car_part%noise:-35 %car_part%odometer:39
%car_part%on_way:40 %car_part%question:130 %car_part%refuse:62 %car_part%shake:-34 %car_part%start_again:39
%car_part%wrong_one:23 %do_it:-24 %do_it%elsewhere:-34 %do_it%family:-21 %do_it%gone_car:24 %do_it%leak:-19
%do_it%lift:-33 %do_it%money:-30 %do_it%question:116 %do_it%refuse:94 %do_it%season:-27 %do_it%staff:62
%do_it%start_again:36 %doubt:-21 %elsewhere:-79 %elsewhere%pay_day:40 %elsewhere%place:-18 %elsewhere%question:-77
%elsewhere%season:48 %elsewhere%shift_it:51 %fails:43 %fails%how_long:79 %fails%machine:-19 %fails%question:124
%family:-44 %gone_car:-80 %gone_car%money:-28 %gone_car%start_again:21 %how_long:-213 %how_long%lift:47
%how_long%meaning:24 %how_long%opening:-20 %how_long%question:-91 %how_long%refuse:-48 %how_long%season:28 %leak:-33
%leave_me:-74 %leave_me%question:-64 %lift:38 %lift%meaning:25 %lift%money:-34 %lift%on_way:-20 %lift%question:-44
%lift%season:49 %machine:-41 %machine%refuse:61 %machine%staff:-20 %meaning:371 %meaning%money:-27
%meaning%on_way:-24 %meaning%pay_day:-19 %meaning%phone:-29 %meaning%place:18 %meaning%question:283
%meaning%refuse:29 %meaning%thanks:32 %meaning%wrong_one:24 %message:-94 %message%question:-53 %message%refuse:-33
%money:-221 %money%place:140 %money%question:-148 %money%refuse:-40 %money%shift_it:-25 %noise:-40 %noise%refuse:-19
%odometer%on_way:24 %odometer%question:22 %odometer%refuse:18 %odometer%shift_it:20 %on_way:-33 %on_way%place:42
%on_way%question:50 %opening:-92 %opening%question:-69 %pay_day:-41 %pay_day%question:-46 %pay_day%season:22
%pay_day%shift_it:46 %phone:-110 %phone%question:-36 %phone%staff:-25 %place:-76 %place%question:-60 %question:232
%question%refuse:19 %question%shift_it:-41 %question%staff:55 %question%who:-151 %question%wrong_one:69
%refuse%start_again:-38 %refuse%thanks:26 %season:78 %season%shift_it:64 %shake:-34 %shift_it:-22
%shift_it%wrong_one:25 %smoke_smell:-24 %thanks:-40 %who:-143 %wrong_one:-55 @?:182 @after_visit:-63 @car:-79
@confirm:-54 @confirm_stop:-134 @nothing:-28 @odometer:48 @reading:-62 @time:-100 @times:-69 @walk_in:-36 ^_a:-31
^_ballpark:-18 ^_cada:29 ^_can:75 ^_car:-25 ^_claro:-30 ^_could:75 ^_cual:20 ^_cuando:-28 ^_cuanto:57 ^_de:111
^_depends:-21 ^_do:108 ^_doesnt:-51 ^_donde:-19 ^_el:-62 ^_en:-35 ^_esta:49 ^_estan:-23 ^_front:25 ^_got:-18 ^_hay:38
^_hello:-21 ^_hold:-19 ^_how:55 ^_i:-109 ^_is:109 ^_it:-114 ^_lo:-54 ^_need:-46 ^_not:-55 ^_odometer:33 ^_para:43
^_por:50 ^_puede:25 ^_puedo:115 ^_pues:-30 ^_que:35 ^_quien:-22 ^_se:23 ^_si:-111 ^_that:-47 ^_what:-91 ^_when:-28
^_which:48 ^_who:-56 ^_why:99 ^_will:79 ^_would:22 ^_y:19 ^_ya:-56 ^_yes:-25 ^_yo:-23 ^_you:-27 a:45 a_$:-19
a__filter:51 a__off:-30 a__thing:-20 a_cabin:58 a_car:24 a_hacer:61 a_mi:19 a_que:-29 a_rip:-42 about:-39 about_$:-72
about_it:33 abren:-21 aceite:-72 acuerdo:20 address:-27 address_$:-21 after:-24 again_$:22 aguanta:87 ahi:-19
ahi_$:-20 algo:29 all_day:-44 am:35 am_i:27 amables:-23 an:-55 an_appointment:-19 an_hour:-33 and__are:21 and_why:31
andar:24 anyway:54 anyway_$:54 appointment_$:-26 appointment_for:25 are:47 are__doing:34 are_the:19 are_they:71
are_you:-36 asi:108 asi_$:121 at_that:22 bad:-23 ballpark:-18 be_$:-60 be__to:23 be_doing:70 before:57 before_it:78
belt:34 between:-33 big:22 brake_$:-19 brake__flush:20 brake_fluid:23 brakes:25 brakes_are:-18 brand:-32 break:38
bring:-43 but_what:26 cabin:67 cabin_filter:54 cada:19 can:165 can__drive:82 can__get:23 can__make:-21 can__wait:111
can_i:106 can_it:85 can_you:-24 cant:-22 caro:-44 carro_$:20 caso:23 change_$:-19 changed:24 changing:20 charging:-25
check:-23 checks:-19 cien:-19 cita:38 cita_$:20 claro:-30 claro__si:-23 claro_que:-23 cobran:-18 come:80 come_$:110
como:-83 como__que:44 con:-31 cosa:47 cosa_$:35 cost:-78 cost_$:-34 cost_me:-23 could:77 could_you:77 creo_que:-21
cual__la:-19 cual_es:28 cuando:-79 cuando_lo:-20 cuanto:37 cuanto__me:89 cuanto__y:21 cuanto_es:-19 cuanto_me:-36
cuanto_por:-26 dan:-52 dangerous:46 day:-59 day_$:-41 de:75 de__lo:50 de__me:21 de_a:28 de_llantas:-55 de_que:52
de_verdad:79 deal:23 decir:63 dejo:21 del:33 depends:-21 desde:-19 desde_que:-18 dia:-79 dia_$:-51 dias:-24
diciembre:20 did:71 did__find:61 did_it:-24 did_the:40 did_you:56 digame:22 digo:-21 direccion:-25 direccion_$:-19
do:79 do__charge:-20 do__get:-36 do__go:-19 do__need:124 do__use:-35 do_i:70 do_it:-52 do_they:33 do_you:-69 does:116
does__mean:21 does__need:18 does__take:-27 does_it:22 does_that:59 doesnt:-46 doing:133 doing_$:67 doing__it:47
doing_to:47 donde:-34 donde_es:-19 donde_estan:-18 done:31 down:60 down_for:25 drive:118 drive_it:34 drive_to:46
drop:-18 due:58 el:-81 el__es:23 el__mes:-28 el__que:-41 el_otro:-30 el_que:-33 el_volante:-19 en_cuanto:-22 en_el:44
en_un:-18 engine:18 entra:-21 era:42 es:201 es_$:-112 es__de:19 es__o:28 es__que:52 es__y:24 es_de:62 es_el:47
es_eso:88 es_este:-34 es_gratis:-61 es_grave:26 es_lo:42 es_mi:-22 es_peligroso:40 es_que:-34 es_un:21 es_urgente:25
es_usted:-22 es_y:24 esas:18 ese:43 ese_servicio:44 eso:206 eso_$:73 eso__que:18 eso_de:26 eso_del:40 eso_que:20
eso_y:23 espanol:27 esperar:53 esperar_$:37 esta:53 esta_muy:58 estan:37 este:-47 este_$:-32 esto:-39 esto_$:-37
estoy:-20 even:67 even__a:31 even_is:39 exactamente:29 exactamente_$:25 exactly:69 exactly_$:24 exit:-40 explain:42
explica:79 falta:47 falta_$:21 favor:25 favor_$:47 few:21 filter:63 filtro:30 find:49 first:-19 five:37 fix:-36
fix_it:-24 fluid:48 fluid_flush:20 flush:62 flush_$:40 for:55 for_$:103 for_it:-30 for_me:21 for_what:30 four:60
free:-97 free_$:-85 freno:-38 freno_$:-24 frenos:32 frenos_$:35 front:42 fue:54 fue__que:48 fue_lo:48 fuerza:18
fuerza_$:18 get:-42 get_to:-19 getting:24 go_for:-20 going:-35 going__be:-33 going__cost:-28 going_to:-39 gratis:-63
gratis_$:-61 grave:46 grinding:-20 hace_falta:18 hacer:80 hacer_$:38 had:-25 hago:50 hago_$:42 happen:23 happens:69
happens__i:62 happens_if:62 hasta:23 hasta_que:-30 have:27 have_to:71 hay:19 hay_que:-23 hello:-21 hicieron_$:-18
hold:-19 hold_off:-18 hora:-18 hour:-34 how:66 how__are:52 how__can:79 how__for:-49 how__i:-101 how__is:-36
how__the:23 how__to:-28 how__will:-24 how__you:-21 how_bad:23 how_do:-38 how_low:41 how_many:29 how_much:-91 hoy:-34
hoy_mismo:-20 i__a:-27 i__all:54 i__for:-31 i__have:49 i__it:41 i__need:64 i__on:105 i__out:21 i__that:-18 i__the:-23
i__there:-21 i__these:-40 i__this:18 i__to:-88 i__you:-36 i_be:31 i_can:-21 i_drive:63 i_get:-27 i_go:46 i_just:22
i_know:-23 i_mean:-44 i_need:49 i_skip:32 i_stop:-21 i_thought:22 i_wait:27 i_was:-46 idea:-33 if:115 if__skip:32
if_i:104 ill:-22 im:44 im__a:21 im__on:34 im_not:19 in:-32 insurance:-22 is:85 is__a:44 is__about:-60 is__address:-25
is__an:-18 is__bad:58 is__cabin:46 is__cost:-27 is__dangerous:46 is__do:46 is__for:52 is__free:-64 is__how:-18
is__like:-28 is__off:19 is__oil:-34 is__ok:49 is__on:52 is__price:-37 is__really:-43 is__safe:29 is__something:21
is__with:57 is_a:97 is_due:21 is_fine:-31 is_for:43 is_it:81 is_leaking:-22 is_that:70 is_the:-95 is_this:-57
is_wrong:60 is_your:-38 it:141 it_$:-36 it__all:-34 it__an:-32 it__done:-24 it__for:46 it__free:-31 it__if:20
it__in:-18 it__is:24 it__it:47 it__like:-19 it__that:39 it__this:28 it__to:66 it_a:35 it_an:-24 it_back:-23 it_bad:39
it_be:-59 it_cost:-25 it_dangerous:29 it_down:25 it_is:-79 it_need:25 it_now:38 it_ok:53 it_really:-30 it_safe:29
it_take:-33 it_to:67 it_wait:84 just:-28 k:42 k_$:40 kids:19 know__is:24 know_it:23 know_you:-21 la:-42 la__de:-29
la_cita:59 la_luz:-21 labor:-48 labor_$:-36 las:-33 last:33 late:-19 later:-18 le:208 le__a:85 le__y:18 le_falta:36
le_hacen:42 le_hicieron:19 le_toca:54 le_van:56 leaking:-18 leaving:38 left:55 left_on:58 les:75 life:46 like_an:-31
list:18 llantas_$:64 lo:52 lo__le:22 lo_dejo:25 lo_hago:48 lo_necesito:53 lo_que:20 long__i:53 long__it:47
long_do:-21 long_does:-21 long_will:-21 los:-27 low:63 lugar:-18 luz:-23 make:67 make__to:79 make_it:94 mal:75
mal_$:135 malo:96 manejando:74 manejar:29 many:27 maquina:-27 marca:-50 mas:60 mas_tarde:-21 matter:-35 me_$:-30
me__it:35 me__para:18 me__por:59 me__this:23 me_back:-25 me_explica:79 me_lo:-28 me_paguen:-21 me_puede:23
me_sirve:-57 me_urge:-36 me_what:61 menos:-20 mensaje:-20 mes:40 mes_$:34 mes_que:-18 metal:24 mi:-61 mientras:42
mil:26 miles:37 mis:44 months:20 more:93 more_$:71 much:-99 much__it:-35 much_for:-41 much_is:-49 much_to:-31
mucho:20 must:55 muy:38 muy_mal:45 my:-66 my_brakes:19 necesario:26 necesito__me:-20 necesito_que:-20 need:85
need__bring:-28 need__for:-44 need__oil:35 need_a:-23 need_that:30 need_to:-67 needs:66 negocio:-46 new:-21 next:-20
ni:-19 no:-31 no_$:-55 no__hago:60 no__is:45 no__la:-19 no__lo:18 no__que:-19 no_es:-23 no_gracias:18 no_lo:35
no_need:-19 no_para:-27 no_thanks:19 no_what:64 noise_at:20 nomas:20 normal:44 not:-187 not_$:-140 not__car:23 now:94
now_$:73 number:-69 number_$:-33 number_is:-27 numero:-33 numero_es:-23 o:163 o_es:60 o_que:38 odometer:42 of:-18
of_them:30 off_of:33 oil:-35 ok:56 ok__drive:63 ok__it:-29 ok_to:71 on:117 on_$:-42 on__list:23 on__road:36 on_a:32
on_me:49 on_my:24 on_that:-18 one_$:20 open:-23 or:62 or_$:-23 or__that:21 or_is:34 or_no:35 otro:34 otro_mes:41
out:-20 paguen:-21 para:39 para__es:44 para__lo:24 para__no:-28 para__sirve:27 para_cuando:-28 para_que:85 pasa:112
pasa_si:69 peligroso:40 pero:46 pero__es:25 pero__que:27 pero_que:40 person:24 pie:26 place:-27 please:32 poco:27
point:26 poquito:24 por:49 por__no:-37 por_favor:30 por_que:79 price:-34 price_on:-23 problema:67 pronto:20 puede:41
puedo:115 puedo__hoy:-21 pues:-32 pulls:-34 put_on:-23 que:73 que_$:-98 que__a:-18 que__de:-40 que__decir:66
que__el:-22 que__en:36 que__es:-82 que__ese:50 que__eso:100 que__estan:-28 que__hacen:32 que__hicieron:26 que__la:22
que__le:67 que__lo:74 que__mal:56 que__me:-24 que__por:-24 que__si:63 que__toca:42 que__un:27 que__van:66
que_entra:-21 que_era:46 que_es:245 que_fue:48 que_hora:-26 que_la:-20 que_le:207 que_me:-63 que_no:-103 que_pasa:69
que_quiere:65 que_sea:-20 que_si:-48 que_significa:26 que_sirve:27 que_tan:124 que_tiene:72 que_va:-26 queda:70
queda_$:76 quedo:-19 quick:-64 quien:-53 quien_es:-33 quiere:57 quiere_decir:66 quieren:48 quiero:-27 quiero_que:-20
rapido:-42 rato:-31 real:-24 really:78 rear:24 rear_$:26 remind:49 remind__what:57 remind_me:49 right_now:28 rip:-42
road:31 robot:-23 robot_$:-23 run:-183 run_$:-140 run_me:-40 saben:38 safe:25 safe__drive:21 safe_to:29 saving:-18
says:42 se:45 se__que:-21 sea:-23 see:-37 see__my:-28 seguro:23 semana:-22 serious:78 serious_$:53 serpentine:25
serpentine_belt:25 service:31 service_$:22 set:-37 set__back:-24 set_me:-24 shop:-42 shop_is:-25 should:36
should__be:38 should_i:43 si:54 si_$:-47 si__dejo:29 si__le:21 si__lo:47 si__que:-33 si_lo:74 si_me:-38 si_no:68
siendo:18 significa:39 sigo:58 sirve:-46 sirve_$:-43 skip:29 skip_it:18 so:69 so__is:20 son:-22 soon:51 spring:23
spring_$:22 still:-23 stop:-40 stop_$:-22 street:-38 street_$:-24 take:-43 take_$:-30 taller:-28 tan:184 tan__es:-21
tan__esta:37 tan_grave:20 tan_mal:58 tan_malo:36 tarde:-20 tech:37 tell:85 tell_me:88 tengo:-45 tengo_que:-36
text:-18 texting:-21 that:74 that_$:65 that__do:31 that_is:-21 that_one:19 the:50 the__are:-22 the__for:29 the__if:19
the__in:19 the__is:32 the__on:-22 the_am:21 the_car:22 the_list:22 the_price:-30 the_tech:40 the_thing:61
the_tires:66 the_wait:-41 them:108 them_$:114 then:24 there_$:-43 these:39 these_$:59 they:156 they_$:67 they__the:54
thing:37 thing_$:-26 this:38 this_$:-66 this__for:38 this_about:-60 this_number:-29 though:35 though_$:40 tiene:52
tiene_$:59 tienen_$:-31 til:36 time:-121 time_$:-26 time__it:-34 time__you:-22 time_do:-25 tires:50 tires_$:32 to:73
to_$:-28 to__a:-21 to__me:-46 to__this:40 to__to:38 to_be:30 to_bring:-37 to_cost:-28 to_do:96 to_drive:79 to_fix:-34
to_it:46 to_me:-24 to_see:-23 to_set:-19 to_you:-21 toca:59 toca_$:35 today:-19 todos:-19 too:-29 too_$:-23 top:55
top_off:58 trabajo:-31 tread:38 trip:39 tuve:-18 tuve_que:-18 un_poquito:26 una:-39 under:-20 up:-28 up_$:-35
urge:-42 urgent:29 urgent_$:31 urgente:43 use:-55 usted:-24 va:-60 va_$:-26 va_a:-21 van:53 van__hacer:48 van_a:60
veces:-18 vegas:25 vegas_$:27 verdad:88 vida:34 viene:29 volante:-19 wait:52 wait_for:-18 wait_on:22 wait_or:19
want:21 want_it:18 was:33 was_the:68 week:-34 what:151 what__a:84 what__do:-19 what__if:62 what__it:55 what__that:-51
what__this:-53 what__wrong:65 what__you:82 what__your:-35 what_a:-60 what_about:-24 what_am:24 what_did:113
what_do:-47 what_does:110 what_exactly:48 what_happens:70 what_i:-20 what_street:-29 what_this:30 what_time:-66
what_was:87 what_would:-52 wheel:-20 when:-94 when_i:-36 where__the:27 which:33 which__are:33 which__do:-23
which__is:-52 which_exit:-40 which_shop:-24 who:-58 who__this:-35 who_is:-40 why:228 why_$:57 why__i:31 why__it:60
why__you:32 why_do:68 why_does:42 why_is:47 why_not:-141 why_would:43 wifi:-62 wifi_$:-50 will:66 will__be:-22
will_the:38 winter:46 winter_$:55 with:55 with_it:35 with_my:20 wont:-26 worn:26 worse:18 would:-36 would__need:40
would_that:-63 would_you:67 wouldnt:-23 wrong:80 wrong_with:69 y:92 y__de:26 y__que:57 y_cuanto:21 y_el:22 y_eso:21
y_por:29 y_que:30 y_si:18 ya:-109 ya_esta:-34 ya_que:-21 yes:-65 yes_$:-42 yes__what:23 yes_i:-19 yet:32 yet_$:33
yo:-41 you:-78 you_$:-57 you__for:-21 you__it:-40 you__me:86 you__on:-24 you__that:22 you__the:-23 you_be:73
you_charge:-21 you_do:-24 you_find:61 you_have:-20 you_need:-43 you_on:-20 you_open:-19 you_tell:67 your:-47
"""
