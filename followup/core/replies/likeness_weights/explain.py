"""What speaks for and against `explain`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "explain"
BIAS = -176
WEIGHTS = """\
#abaj:-68 #aben:58 #aber:32 #abin:105 #able:-58 #abor:-55 #abou:-51 #abus:-45 #acei:-72 #acer:102 #acta:28 #actl:108
#addr:-40 #ados:58 #agai:45 #agar:-29 #agua:157 #ails:68 #ajan:-25 #ajar:58 #ales:64 #algo:62 #algu:-25 #alle:-84
#allp:-29 #ally:89 #alta:59 #amab:-28 #ance:-53 #anda:46 #ando:-45 #ands:25 #anej:112 #ange:73 #anta:125 #ante:27
#anto:62 #anua:56 #anyw:57 #apag:-28 #apid:-63 #appe:117 #aqui:-43 #arca:-65 #arda:-65 #arde:-36 #argi:-33 #aron:56
#arou:-25 #arra:-35 #arzo:34 #asta:145 #asur:65 #ated:-44 #ater:-59 #atis:-83 #ator:74 #atte:-37 #auto:-26 #avor:30
#back:-39 #baja:-32 #bajo:-38 #befo:63 #belt:80 #betw:-69 #bien:-53 #bina:32 #blan:-29 #blem:76 #blig:81 #blow:35
#boot:26 #bout:-56 #brak:27 #bran:-70 #brea:59 #bren:-25 #brin:-70 #busi:-53 #cabi:105 #cada:34 #camb:37 #caro:-43
#ccio:-38 #ceit:-72 #cesa:40 #cesi:28 #cess:71 #chan:26 #char:-66 #cita:61 #clos:-25 #cluy:65 #cobr:-30 #coge:-25
#come:71 #comi:41 #como:-96 #cont:57 #cosa:50 #cost:-141 #coul:118 #crib:-50 #ctam:31 #ctly:108 #cual:63 #cuan:-54
#cuer:34 #cupo:-30 #dado:-48 #dang:60 #days:-40 #dder:30 #ddre:-40 #debe:40 #deci:59 #deja:-35 #dejo:31 #depe:-33
#ders:25 #desd:-27 #dias:-35 #dice:34 #dier:26 #dife:26 #digo:-51 #dire:-38 #does:94 #doin:151 #dome:47 #dond:-42
#done:30 #down:72 #dres:-49 #driv:156 #drop:-27 #dura:125 #eall:92 #ease:46 #easu:65 #eavi:36 #ecci:-33 #eces:109
#ecir:72 #ecki:29 #ecog:-28 #ecom:50 #edal:-26 #eeds:69 #efor:63 #egas:30 #egoc:-50 #egre:-29 #egue:-37 #egui:74
#eite:-81 #ejan:59 #ejar:42 #elig:65 #eman:-30 #emen:53 #emin:51 #empr:-27 #enco:75 #enda:41 #ende:-31 #enen:-39
#enga:-41 #engi:25 #engo:-59 #ensa:-32 #ensi:-25 #ente:35 #enti:42 #ento:40 #entr:-42 #epen:-34 #epla:58 #erar:72
#eras:70 #erda:103 #eren:92 #eria:-37 #erio:63 #erne:27 #eros:-61 #erou:54 #erpe:31 #erte:37 #ervi:37 #esar:26
#esas:31 #escr:-36 #esde:-27 #esnt:-54 #espe:34 #essa:75 #esta:72 #este:-62 #esto:-79 #eter:46 #etti:28 #etwe:-69
#even:93 #ever:38 #exac:131 #exit:-53 #expl:214 #exti:-27 #fail:76 #falt:62 #favo:30 #fect:28 #fere:31 #fica:46
#filt:117 #find:78 #five:30 #flui:93 #flus:70 #fore:68 #foun:31 #four:57 #free:-135 #fron:33 #gain:45 #gast:120
#gato:75 #gent:79 #gero:54 #gett:31 #gnif:44 #gnor:46 #goci:-50 #goin:-76 #gone:-28 #grat:-83 #grav:56 #gres:-29
#guan:170 #guen:-36 #gues:38 #guir:66 #hace:140 #hago:54 #hang:27 #happ:114 #hard:-39 #harg:-57 #harm:32 #hast:31
#have:45 #heel:-25 #heet:43 #hell:-28 #here:-47 #hese:50 #hich:39 #hing:72 #hist:26 #hora:-69 #hose:42 #houg:47
#houl:56 #hour:-53 #hudd:30 #hurs:-27 #iaja:63 #iaje:40 #ible:-26 #icam:34 #idea:-40 #iend:29 #iene:64 #iere:135
#iern:28 #iero:-32 #ifer:26 #ific:46 #igam:33 #ight:-73 #igni:44 #igno:48 #igro:65 #iles:57 #ilte:71 #iltr:47
#imet:36 #incl:66 #insu:-27 #inte:52 #invo:51 #ious:48 #iqui:46 #irec:-33 #ires:36 #irve:-82 #isen:-29 #jand:108
#keep:32 #labo:-55 #lain:82 #lame:-36 #laro:-35 #last:62 #late:-25 #leak:-34 #leas:41 #leav:29 #left:62 #legu:-31
#lema:67 #leva:-27 #lica:131 #life:75 #ligh:-49 #ligr:65 #lime:36 #line:-31 #liqu:62 #llam:-53 #llas:37 #lleg:-37
#ller:-49 #llev:-28 #llow:34 #llpa:-29 #long:40 #look:32 #lpar:-29 #lter:65 #ltro:47 #luid:93 #lush:70 #luye:65
#mabl:-28 #make:80 #malo:138 #mana:-49 #mane:99 #mano:-28 #manu:55 #many:47 #maqu:-29 #marc:-66 #marz:34 #matt:-53
#mber:-87 #mbia:32 #meas:70 #mend:27 #meno:-46 #mens:-31 #ment:50 #mero:-64 #mete:46 #mien:73 #mile:65 #mill:27
#mind:40 #more:81 #moto:25 #mpan:-31 #much:-102 #muer:32 #must:63 #nclu:62 #ncon:75 #ndar:29 #nden:-37 #nece:139
#need:169 #nego:-50 #neja:115 #nged:26 #nger:69 #ngin:39 #nifi:44 #nite:-35 #noma:38 #nore:44 #norm:77 #nsaj:-30
#nsur:-27 #ntar:30 #ntas:-31 #nten:38 #nter:59 #ntin:30 #nton:25 #ntra:36 #nual:55 #numb:-84 #nume:-50 #nver:34
#nywa:57 #oble:79 #obli:81 #obot:-30 #ocio:-52 #ocup:-28 #odom:48 #oesn:-54 #oing:75 #oint:54 #oked:31 #oles:-28
#olve:34 #omas:44 #omet:45 #ompa:-27 #onde:-38 #ontr:61 #ooke:31 #oqui:30 #orio:76 #orma:70 #orri:35 #orse:41
#oser:-49 #otar:26 #othe:32 #otor:51 #otro:37 #ould:109 #ound:25 #oure:25 #ousl:-43 #over:-45 #pagu:-28 #park:-34
#pasa:171 #pase:-32 #pass:-28 #peda:-26 #peli:65 #pend:-41 #pens:48 #pent:30 #pera:51 #pero:101 #pido:-61 #plai:82
#play:26 #plea:44 #plic:129 #poco:33 #poin:30 #poqu:33 #pose:27 #ppen:116 #pres:-33 #pric:-64 #prob:84 #pued:161
#pues:-49 #pull:-56 #push:27 #quea:-37 #qued:70 #quem:26 #quic:-83 #quid:44 #quie:28 #quin:-35 #raba:-65 #rada:-34
#ranc:-35 #rand:-29 #rans:36 #rapi:-67 #raro:88 #rata:53 #rati:-86 #rato:-44 #rave:56 #rdad:43 #read:40 #reak:59
#real:67 #rear:37 #reat:-27 #recc:-30 #reci:-28 #reet:-55 #regr:-29 #reme:44 #remi:51 #repl:49 #resa:-47 #ress:-44
#rgen:87 #rgin:-33 #ribe:-34 #rice:-64 #ried:48 #riou:49 #risk:38 #rive:128 #rmal:77 #rnes:27 #road:39 #robl:82
#robo:-37 #rong:100 #ront:41 #rose:-49 #roso:58 #rota:44 #rous:54 #rpen:31 #rque:-31 #rran:-35 #rrie:38 #rumb:-31
#rvic:38 #sabe:84 #safe:49 #saje:-36 #sali:-42 #same:-28 #sari:38 #sary:72 #says:56 #scri:-50 #segu:113 #sema:-33
#sens:26 #sera:29 #seri:61 #sero:-49 #serp:31 #serv:34 #shee:43 #shin:30 #shop:-59 #shou:55 #shud:30 #sign:51
#sigo:58 #sirv:-82 #skip:38 #sold:-29 #soon:55 #sper:45 #sque:-32 #ssar:72 #stad:93 #stan:56 #star:-29 #stop:-45
#stre:-56 #supp:30 #sura:-27 #sure:44 #tada:28 #tado:58 #take:-62 #tall:-63 #tamb:-29 #tame:25 #tant:28 #tara:37
#tard:-98 #tech:48 #tell:99 #teng:-94 #text:-62 #that:121 #them:139 #then:39 #thes:50 #they:238 #thin:59 #this:65
#thos:45 #thou:41 #thur:-30 #tien:52 #time:-145 #tine:31 #tire:41 #toca:80 #toma:-40 #tori:73 #trab:-60 #trad:-33
#tran:50 #trar:74 #tras:41 #trat:52 #trea:47 #tree:-57 #trip:48 #truc:-25 #tter:-55 #twee:-69 #uand:-88 #uant:204
#udde:28 #ueda:50 #uede:46 #uedo:119 #uego:-27 #uerd:34 #uess:38 #uick:-83 #uido:56 #uien:-63 #uier:74 #uina:-34
#uito:26 #ulls:-39 #umbe:-84 #umbo:-35 #umer:-50 #uran:74 #urge:31 #usan:-69 #ushi:27 #usly:-43 #uste:-29 #vale:-27
#vece:-30 #vega:31 #vent:31 #vera:78 #verd:112 #viaj:102 #vice:37 #vida:50 #vien:27 #ving:31 #vise:-28 #volv:34
#wait:64 #ween:-69 #were:28 #what:231 #whee:-25 #when:-139 #whic:39 #whys:29 #wifi:-77 #will:102 #wint:56 #with:53
#wont:-33 #worn:29 #worr:56 #wors:38 #woul:-62 #wron:100 #xact:131 #xpla:44 #xpli:170 #xtin:-27 #yeah:-29 #year:30
#yell:25 #your:-67 #yway:57 %again_later:110 %again_later%call_off:-55 %again_later%elsewhere:58
%again_later%how_long:31 %again_later%lift:112 %again_later%meaning:98 %again_later%money:-63 %again_later%place:-44
%again_later%question:-46 %again_later%season:69 %agree:-38 %agree%away:34 %agree%call_off:125 %agree%car:50
%agree%car_part:36 %agree%do_it:31 %agree%fails:34 %agree%how_long:-56 %agree%leave_me:-30 %agree%meaning:27
%agree%money:94 %agree%odometer:-34 %agree%place:91 %agree%refuse:-29 %agree%season:35 %agree%shake:28
%agree%shift_it:61 %agree%wrong_one:31 %away%call_off:36 %away%car:28 %away%odometer:56 %away%on_way:48
%away%place:54 %away%refuse:-36 %bad%car:-33 %bad%car_part:-53 %bad%leak:-27 %bad%meaning:-70 %bad%money:-33
%bad%place:70 %bad%question:86 %bad%refuse:-27 %bring:-67 %bring%call_off:-32 %bring%do_it:-25 %bring%fails:29
%bring%leave_me:-29 %bring%meaning:30 %bring%money:-30 %bring%question:49 %bring%shift_it:-62 %busy:-74
%call_off%car_part:32 %call_off%do_it:-35 %call_off%elsewhere:28 %call_off%lift:26 %call_off%meaning:81
%call_off%message:-41 %call_off%odometer:-73 %call_off%refuse:-63 %call_off%shift_it:26 %call_off%start_again:28
%call_off%thanks:37 %car%gone_car:-26 %car%lift:-55 %car%meaning:25 %car%odometer:31 %car%question:112 %car%refuse:41
%car_part:62 %car_part%do_it:-50 %car_part%fails:-32 %car_part%gone_car:-40 %car_part%leak:-31 %car_part%machine:-30
%car_part%money:-58 %car_part%noise:-75 %car_part%odometer:31 %car_part%on_way:64 %car_part%pay_day:-37
%car_part%place:48 %car_part%question:203 %car_part%refuse:54 %car_part%shake:-30 %car_part%shift_it:-34
%car_part%start_again:43 %do_it:-37 %do_it%elsewhere:-29 %do_it%leak:-31 %do_it%lift:-36 %do_it%question:170
%do_it%refuse:129 %do_it%staff:93 %do_it%start_again:36 %do_it%wrong_one:28 %elsewhere:-104 %elsewhere%pay_day:37
%elsewhere%question:-110 %elsewhere%season:75 %elsewhere%shift_it:69 %fails:72 %fails%how_long:92 %fails%question:112
%fails%shift_it:-26 %family:-48 %family%odometer:-28 %family%question:-26 %gone_car:-117 %gone_car%question:-32
%how_long:-273 %how_long%lift:51 %how_long%meaning:42 %how_long%on_way:-26 %how_long%opening:-31
%how_long%question:-111 %how_long%refuse:-58 %how_long%season:31 %leak:-49 %leave_me:-92 %leave_me%question:-84
%lift%meaning:36 %lift%money:-27 %lift%on_way:-32 %lift%pay_day:35 %lift%question:-76 %lift%season:66 %machine:-65
%machine%refuse:79 %machine%staff:-28 %meaning:465 %meaning%money:-32 %meaning%on_way:-26 %meaning%phone:-49
%meaning%place:26 %meaning%question:317 %meaning%refuse:46 %meaning%season:29 %meaning%shift_it:27 %meaning%thanks:29
%message:-118 %message%question:-55 %message%refuse:-31 %money:-269 %money%place:182 %money%question:-188
%money%shift_it:-32 %money%wrong_one:25 %noise:-43 %noise%question:-28 %odometer%refuse:26 %on_way:-37
%on_way%place:52 %on_way%question:63 %on_way%refuse:27 %opening:-100 %opening%question:-88 %pay_day:-66
%pay_day%question:-79 %pay_day%shift_it:43 %phone:-146 %phone%question:-36 %phone%shift_it:-29 %place:-82
%place%question:-93 %question:311 %question%refuse:59 %question%season:-26 %question%shift_it:-80 %question%staff:95
%question%thanks:-41 %question%who:-150 %question%wrong_one:94 %refuse:-47 %refuse%shift_it:27
%refuse%start_again:-45 %refuse%thanks:25 %season:90 %season%shift_it:70 %shift_it%wrong_one:31 %smoke_smell:-29
%thanks:-54 %who:-136 %wrong_one:-55 @?:212 @after_visit:-45 @car:-88 @confirm:-73 @confirm_stop:-198 @odometer:55
@offers:-40 @reading:-63 @time:-91 @times:-76 @walk_in:-46 ^_aguanta:90 ^_ballpark:-28 ^_cada:27 ^_can:93 ^_car:-31
^_claro:-36 ^_como:-25 ^_could:96 ^_cual:32 ^_cuando:-30 ^_cuanto:81 ^_de:138 ^_depends:-28 ^_do:114 ^_doesnt:-50
^_el:-66 ^_esta:57 ^_got:-29 ^_hay:27 ^_hello:-28 ^_i:-136 ^_if:-26 ^_is:129 ^_it:-160 ^_lo:-78 ^_need:-59 ^_no:26
^_not:-52 ^_odometer:40 ^_para:61 ^_pero:36 ^_por:54 ^_puedo:160 ^_pues:-33 ^_que:27 ^_se:37 ^_should:60 ^_si:-128
^_that:-74 ^_tienen:-30 ^_tire:-26 ^_top:28 ^_va:-26 ^_what:-219 ^_when:-36 ^_which:42 ^_who:-27 ^_why:113 ^_will:105
^_would:31 ^_y:25 ^_ya:-73 ^_yes:-38 ^_yo:-29 a:47 a__belt:25 a__carro:26 a__deal:25 a__filter:62 a__of:-32
a__off:-31 a__thing:-28 a__to:27 a__trip:59 a_big:35 a_cabin:68 a_como:-25 a_hacer:86 a_que:-32 a_rip:-39 a_road:51
a_serpentine:25 about:-58 about_$:-65 about_it:32 aceite:-87 acuerdo:25 address:-40 address_$:-28 again:40 again_$:51
aguanta:132 aguanta_hasta:32 ahi:-40 ahi_$:-30 algo:71 all:39 all_day:-37 all_four:67 am:53 am_i:39 an:-56
an_hour:-43 and:111 and__is:30 and__it:50 and__much:46 and_how:43 and_is:41 and_it:-33 and_what:60 and_why:54
andar:37 andar_asi:27 anyway:57 anyway_$:53 appointment_$:-27 are:71 are_$:-28 are__charging:-34 are__doing:51
are_they:89 are_we:34 are_you:-27 asi:165 asi_$:151 at_that:25 back:-38 bad:-74 ballpark:-29 ballpark_$:-25 be:-39
be_$:-79 be__to:39 be_doing:82 before:63 before_it:79 belt:73 belt_$:34 between:-69 between_and:-30 big:47
big_deal:42 boot:26 brake_$:-27 brakes:42 brakes_$:35 brand:-36 break:60 bring:-55 but:30 but_what:51 cabin:73
cabin_filter:63 cabina:32 cabina_$:28 cada:32 can:191 can__drive:107 can__get:34 can__wait:144 can_i:149 can_it:130
can_you:-33 car:-28 caro:-45 carro_$:36 changed:26 charge:-25 charging:-34 checking:29 cita:60 cita_$:28 claro:-33
claro__si:-36 claro_que:-37 cobran:-31 come:77 come_$:103 come_to:-35 como:-102 como__que:66 como_saben:66 cosa:56
cosa_$:32 cost:-123 cost_$:-55 cost_me:-32 could:116 could_do:29 could_you:86 creo_que:-29 cual__el:55 cual_es:28
cuando:-88 cuanto:55 cuanto__me:90 cuanto__queda:112 cuanto_es:-41 cuanto_mas:112 cuanto_me:-50 cuanto_por:-36
dan:-42 dangerous:59 dangerous_$:31 day:-81 day_$:-39 day_thing:-37 days:-32 de:104 de__a:27 de__lo:53 de__me:25
de__o:45 de_la:47 de_las:-30 de_llantas:-56 de_que:66 de_veras:55 de_verdad:81 de_vida:59 deal:49 debe:45 decir:67
decir_$:58 dejo:33 del:51 depends:-29 desde:-27 desde_que:-31 dia:-93 dia_$:-58 dias:-35 did:77 did__find:75
did_it:-28 did_the:28 did_you:88 digame:33 digo:-44 direccion:-30 direccion_$:-30 do:94 do__charge:-30 do__get:-54
do__need:148 do__use:-33 do_i:61 do_it:-79 do_they:47 do_this:46 do_you:-73 does:148 does__mean:25 does__take:-35
does_that:70 doesnt:-54 doesnt_matter:-55 doing:151 doing_$:57 doing__it:66 doing_to:66 donde:-40 donde_es:-30
done:30 done_$:31 dont_$:49 down:81 down_for:40 down_on:55 drive:158 drive_it:62 drive_to:58 drop:-26 due:100
due_for:35 el:-108 el__mes:-25 el__que:-72 el_que:-40 en:37 en_el:34 encontraron:75 encontraron_$:68 engine:29
entra:-28 era:42 es:243 es_$:-148 es__de:38 es__del:27 es__o:38 es__que:89 es__un:-26 es__y:38 es_de:38 es_el:52
es_eso:145 es_este:-45 es_gratis:-78 es_grave:26 es_lo:64 es_malo:72 es_mi:-29 es_normal:43 es_peligroso:49
es_que:-49 es_rapido:-25 es_tardado:-57 es_un:37 es_una:-37 es_urgente:26 es_y:36 esa:43 esas:31 ese:48
ese_servicio:49 eso:314 eso_$:114 eso__que:31 eso_de:48 eso_del:52 eso_y:34 esperar:57 esperar_$:45 espero_$:26
esta:75 esta_$:27 esta_muy:69 estan:60 este:-66 este_$:-41 esto:-49 esto_$:-47 even:97 even__a:30 even_is:37
exactamente:31 exactamente_$:27 exactly:108 exactly_$:41 exactly__you:25 exit:-53 explain:49 explica:103 falta:73
falta_$:35 favor:35 favor_$:52 filter:69 filter_$:54 filtro:49 find:60 five:30 fix:-34 fix_it:-27 fluid:84 flush:71
flush_$:35 for:58 for_$:113 for__and:29 for_a:-26 for_again:28 for_it:-41 for_me:29 for_that:-27 found:31 four:57
four_$:58 free:-139 free_$:-104 freno:-58 freno_$:-40 frenos:59 frenos_$:57 front:42 fue:60 fue__que:55 fue_lo:50
get:-68 get_for:-26 get_to:-25 getting:31 go_for:-39 go_on:64 going:-76 going__be:-48 going__cost:-39 going_to:-80
gone:-28 gratis:-83 gratis_$:-77 grave:56 guess:38 hace:33 hace_$:27 hace_falta:26 hacer:103 hacer_$:47 hago:54
hago_$:59 happen:38 happens:81 happens__i:77 happens_if:77 hasta:31 hasta_que:-61 have:39 have__do:108 have_to:70
hay__si:69 hay_que:-33 hello:-28 hold_up:26 hora:-35 hour:-46 how:73 how__are:65 how__can:92 how__does:-34
how__for:-52 how__i:-99 how__is:-69 how__it:39 how__to:-33 how__will:-39 how_come:115 how_do:-33 how_low:49
how_many:48 how_much:-95 hoy:-50 i__a:-36 i__all:61 i__do:27 i__have:49 i__it:46 i__need:76 i__on:122 i__these:-31
i__to:-120 i__you:-32 i_be:53 i_can:-36 i_come:-36 i_do:-25 i_dont:29 i_drive:78 i_go:56 i_just:28 i_know:-29
i_mean:-59 i_need:36 i_owe:-27 i_skip:29 i_wait:34 i_was:-49 idea:-40 idea_$:-29 if:145 if__dont:45 if__skip:29
if_i:140 ignore:38 ill:-36 im__on:44 in:-55 in_$:-38 in_that:41 incluye:67 incluye__servicio:44 insurance:-27 is:137
is__a:60 is__about:-64 is__address:-38 is__appointment:27 is__bad:75 is__cabin:58 is__cost:-43 is__dangerous:47
is__do:54 is__fluid:34 is__for:77 is__free:-78 is__going:-52 is__labor:-42 is__like:-40 is__number:-27 is__oil:-46
is__ok:74 is__on:61 is__price:-46 is__really:-45 is__run:-150 is__safe:45 is__serious:48 is__something:26
is__thing:34 is__urgent:30 is__wait:-46 is__what:31 is__wifi:-55 is__with:77 is_a:146 is_due:38 is_fine:-42 is_for:43
is_it:145 is_leaking:-26 is_that:98 is_the:-129 is_this:-47 is_what:-26 is_wrong:80 is_your:-65 it:183 it_$:-69
it__a:-28 it__an:-40 it__done:-27 it__for:59 it__free:-45 it__in:-28 it__is:52 it__it:44 it__k:44 it__leaking:-25
it__quick:-30 it__that:70 it__this:39 it__to:63 it_a:53 it_back:-28 it_bad:47 it_be:-62 it_cost:-54 it_dangerous:31
it_do:27 it_down:40 it_due:37 it_how:30 it_is:-113 it_need:33 it_now:41 it_ok:71 it_quick:-44 it_really:-29
it_safe:39 it_take:-38 it_to:58 it_urgent:30 it_wait:114 it_what:30 k:50 k_$:41 keep:29 know_you:-25 la:-93
la__de:-42 la_cita:72 labor:-55 labor_$:-38 last:56 later:-30 le:221 le__a:109 le__y:26 le_digo:-27 le_falta:50
le_hacen:47 le_pasa:53 le_toca:75 le_van:84 leaving:36 left:62 left_on:72 les:76 life:59 light:-27 like_an:-38
like_im:32 liquido:47 llamen:-25 llantas_$:64 lo:75 lo__pronto:-25 lo_dejo:36 lo_hago:67 lo_mas:-31 lo_necesito:62
long:35 long__i:66 long__it:45 long__need:-39 long_does:-38 long_you:-44 look:47 low:115 low_$:31 make:78 make__to:79
make_it:89 mal:101 mal_$:149 mal_servicio:-50 malo:131 malo_$:29 manejando:98 manejando_$:47 manejar:36 manual:55
many:47 maquina:-29 marca:-54 marzo:34 mas:37 mas_pronto:-26 matter:-51 matter_$:-27 me_$:-25 me__el:-33 me__it:51
me__por:62 me_acuerdo:26 me_back:-31 me_explica:105 me_lo:-47 me_paguen:-27 me_puede:26 me_sirve:-62 me_urge:-51
me_what:94 menos:-45 mensaje:-26 mes:32 mes_$:31 mi:-88 mi_carro:38 mientras:37 miles:57 miles__i:45 mis:32 mm:50
more:94 more_$:73 motor:38 much:-108 much_$:25 much__is:52 much__it:-53 much_for:-43 much_is:-79 much_to:-35
muerte:38 must:63 muy:68 muy_mal:49 my:-31 my_sheet:26 necesario:40 necesito_$:71 necesito__me:-25 necesito_que:-27
necessary:72 necessary_$:72 need:112 need__bring:-30 need__for:-49 need__oil:41 need_a:-37 need_an:35 need_that:62
need_to:-98 needs:69 needs_to:37 negocio:-49 new:-38 ni:-45 no_$:-69 no__acuerdo:26 no__hago:78 no__is:56
no__necesario:-39 no_es:-40 no_gracias:25 no_lo:64 no_para:-31 no_what:91 nomas:38 normal:70 normal_$:28 not:-269
not_$:-191 now:115 now_$:93 now__i:42 number:-95 number_$:-48 number__this:-26 number_is:-32 numero:-43 numero_es:-28
o:240 o_es:55 o_nomas:47 o_que:40 ocupo:-35 odometer:48 of__do:-34 of_oil:-35 of_them:42 off_of:26 oiga:25 oil:-66
ok:95 ok_$:-28 ok__drive:72 ok__it:-27 ok_to:107 on:125 on_$:-52 on__list:28 on__road:39 on_me:48 on_my:36
on_that:-26 or:130 or_$:-27 or_a:36 or_is:55 or_no:39 or_the:34 or_what:-44 otra:26 otro:38 otro_mes:39 owe:-27
paguen:-27 para:30 para__es:59 para__lo:34 para__no:-35 para__quieren:42 para__sirve:31 para_cuando:-33 para_que:126
pasa:161 pasa__no:65 pasa_si:100 peligroso:58 peligroso__asi:25 pero:93 pero__es:33 pero__que:28 pero_que:64 pie:30
place:-39 please:50 please_$:31 poco:27 point:31 poquito:33 por:67 por__no:-55 por__rumbo:-35 por__tan:53
por_favor:40 por_que:162 price:-58 price_on:-33 problema:74 puede:70 puede_esperar:53 puedo:145 puedo__asi:82
puedo_esperar:55 puedo_seguir:66 pues:-26 pulls:-39 put__off:30 que:64 que_$:-99 que__caro:-43 que__con:-25
que__de:-57 que__decir:71 que__en:35 que__es:-114 que__ese:54 que__eso:171 que__estan:-31 que__hacen:37
que__hicieron:25 que__le:76 que__lo:88 que__mal:71 que__malo:46 que__me:-33 que__pasa:40 que__por:-29 que__si:99
que__toca:68 que__un:35 que__van:89 que_cobran:-25 que_entra:-26 que_era:51 que_es:373 que_esperar:-26 que_esta:33
que_fue:64 que_hora:-37 que_incluye:68 que_la:-31 que_le:265 que_mal:-58 que_me:-90 que_no:-142 que_numero:-28
que_pasa:95 que_quiere:71 que_quieren:42 que_sea:-35 que_si:-78 que_significa:33 que_sirve:31 que_taller:-27
que_tan:176 que_tiene:98 que_va:-35 queda:87 queda_$:87 quedo:-27 quick:-79 quick_$:-45 quien:-43 quien_es:-39
quiere:57 quiere_decir:71 quieren:63 quiero:-28 quiero_que:-26 rapido:-59 rato:-41 real:-25 really:92 really_free:-35
rear:34 remind:58 remind__what:72 remind_me:60 right_now:32 rip:-39 road:43 road_trip:52 robot:-30 robot_$:-29
rumbo:-35 run:-225 run_$:-157 run_me:-59 saben:59 saber:31 safe:48 safe_to:32 same:-28 says:56 se:32 sea:-41 see:-46
see__my:-41 seguir:66 semana:-40 sera:34 serious:99 serious_$:64 serpentine:31 serpentine_belt:31 service:41 set:-46
set__back:-27 set_me:-27 sheet:43 sheet_$:26 shop:-64 shop_is:-26 should:54 should__be:55 should_i:55 si:85 si_$:-65
si__dejo:45 si__lo:77 si__que:-43 si_lo:96 si_me:-30 si_no:100 significa:44 sigo:59 sirve:-61 sirve_$:-47 skip:25
so:77 so__is:27 so_soon:58 so_what:36 sold:-28 something_that:25 soon:67 speak:-26 stop:-39 stop_$:-28 street:-55
street_$:-35 take:-57 take_$:-35 taller:-44 tambien:-29 tan:257 tan__esta:52 tan__estan:91 tan_caro:-41 tan_grave:28
tan_mal:87 tan_malo:45 tan_pronto:37 tardado:-57 tarde:-30 tax:-31 tax_$:-25 tech:51 tell:86 tell_me:89 tengo:-59
tengo_que:-50 texting:-26 th_or:28 that:121 that_$:45 that__do:31 that_a:26 that_and:28 that_bad:43 that_be:-52
that_going:-33 that_is:-57 that_the:31 the:66 the__is:31 the__on:-26 the__one:32 the__or:31 the__says:33
the__thing:45 the__with:31 the_belt:38 the_other:33 the_price:-39 the_tech:53 the_thing:50 the_tires:80 the_wait:-48
the_winter:58 them:139 them_$:125 then:39 then_$:38 there:-25 there_$:-43 these:50 these_$:75 they:228 they_$:72
they__the:53 they__to:43 thing:30 thing_$:-38 this:65 this_$:-92 this__for:52 this_about:-69 this_number:-43 those:45
though:33 though_$:39 tiene:76 tiene_$:73 tienen:-38 tienen_$:-33 til:31 time:-146 time__it:-37 time__you:-25
time_do:-28 tires:52 tires_$:40 to:103 to_$:-39 to__me:-61 to__this:38 to__to:46 to_bring:-42 to_cost:-39 to_do:96
to_drive:96 to_fix:-30 to_it:69 to_know:26 to_me:-28 to_see:-27 to_the:-25 to_you:-28 toca:83 toca_$:62 today_$:-27
too:-27 top:47 top_off:51 trabajo:-34 tread:57 trip:50 un__a:27 una:-30 una_maquina:-28 urge:-50 urgent:38
urgent_$:30 urgente:49 use:-59 va:-82 va_$:-26 vale:-25 van:87 van__hacer:73 van_a:93 veces:-30 vegas:31 vegas_$:32
veras:55 verdad:100 viaje:40 vida:54 viene:31 viernes:27 wait:53 wait_for:-30 wait_on:31 wait_til:26 was:56
was__there:-30 was_just:-26 was_the:99 week:-27 were:28 what:219 what__a:130 what__if:77 what__it:73 what__that:-82
what__this:-41 what__wrong:93 what__you:123 what__your:-69 what_a:-50 what_about:-45 what_am:35 what_are:31
what_did:176 what_do:-81 what_does:120 what_even:30 what_exactly:61 what_for:62 what_happens:77 what_i:-43
what_it:-26 what_my:-36 what_needs:56 what_street:-38 what_this:37 what_time:-95 what_was:143 what_would:-85
when:-145 when_i:-82 which:41 which__are:27 which__do:-27 which__is:-67 which_exit:-40 which_shop:-34 who:-53
who__this:-36 who_is:-52 why:277 why_$:62 why__i:47 why__is:26 why__it:78 why__soon:56 why__you:38 why_do:85
why_does:57 why_is:58 why_not:-186 why_so:56 why_would:62 whys:29 whys_it:31 wifi:-77 wifi_$:-59 will:102
will__be:-39 will__make:49 will_it:31 will_the:41 winter:56 winter_$:59 with:56 with_it:43 wont:-33 worn:29
worried:50 worse:32 would:-39 would__need:40 would_that:-74 would_you:80 wrong:100 wrong__it:34 wrong_with:90 y:160
y__cuanto:27 y__de:29 y__que:81 y_cuanto:25 y_de:43 y_para:30 y_por:45 y_que:45 y_si:27 ya:-151 ya_esta:-41
ya_que:-29 yeah:-29 yellow:25 yes:-96 yes_$:-56 yes__what:34 yet:39 yet_$:40 yo:-60 you:-91 you_$:-64 you__for:-60
you__it:-43 you__me:113 you__that:27 you__the:-39 you_are:-26 you_be:83 you_charge:-33 you_charging:-34 you_find:73
you_get:-39 you_have:-37 you_need:-29 you_on:-26 you_tell:62 your:-91 youre:25
"""
