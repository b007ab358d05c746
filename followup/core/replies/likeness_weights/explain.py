"""What speaks for and against `explain`, in hundredths: made by `python -m tests.replies.fit_likeness`."""

CODE = "explain"
BIAS = -190
WEIGHTS = """\
#abaj:-73 #aben:64 #aber:33 #abin:119 #able:-64 #abor:-61 #abou:-57 #abre:-28 #abus:-49 #acei:-80 #acer:108 #acta:31
#actl:120 #addr:-48 #ados:67 #afec:27 #agai:54 #agar:-30 #agua:166 #ails:77 #ajan:-28 #ajar:61 #ales:73 #algo:72
#algu:-26 #alle:-98 #allp:-33 #ally:99 #alta:63 #amab:-29 #anas:26 #ance:-69 #anda:53 #ando:-40 #ands:30 #anej:121
#ange:82 #anol:25 #anta:123 #ante:35 #anto:62 #anua:64 #anyh:28 #anyw:69 #apag:-30 #apid:-69 #appe:131 #apto:25
#aqui:-44 #arca:-75 #arda:-68 #arde:-39 #argi:-36 #aron:61 #arou:-28 #arra:-39 #arzo:39 #asta:162 #asur:72 #ated:-49
#ater:-67 #atis:-87 #ator:82 #atte:-43 #auto:-29 #avor:31 #back:-37 #baja:-36 #bajo:-39 #ball:-26 #been:-33 #befo:75
#belt:82 #betw:-76 #bien:-61 #bina:38 #blan:-33 #blem:86 #bles:-25 #blig:91 #blow:41 #boot:29 #bout:-57 #brak:32
#bran:-73 #brar:25 #brea:80 #bren:-28 #brin:-75 #busi:-59 #cabi:119 #cada:38 #camb:45 #came:31 #caro:-45 #ccio:-39
#ceit:-80 #cept:-27 #cesa:39 #cess:76 #chan:29 #char:-70 #cien:-25 #cita:70 #ckin:27 #clos:-30 #cluy:74 #cobr:-31
#coge:-27 #come:74 #comi:54 #como:-110 #comp:-25 #cont:62 #cosa:58 #cost:-164 #coul:130 #crib:-52 #ctam:34 #ctly:119
#cual:73 #cuan:-62 #cuen:28 #cuer:40 #cupo:-32 #dado:-51 #dang:68 #days:-45 #dder:34 #ddre:-48 #deal:38 #debe:47
#deci:63 #deja:-41 #dejo:31 #depe:-37 #ders:31 #desd:-33 #dias:-39 #dice:39 #dier:31 #dife:28 #digo:-56 #dine:25
#dire:-39 #does:102 #doin:159 #dome:54 #dond:-47 #done:31 #down:96 #dres:-57 #driv:167 #drop:-28 #dura:144 #eale:-25
#eall:98 #earl:-25 #ease:54 #easu:72 #eavi:38 #ecci:-34 #eces:106 #ecio:-26 #ecir:78 #ecki:33 #ecog:-31 #ecom:56
#ecta:27 #edal:-28 #eden:-26 #eeds:71 #efor:75 #egas:31 #egoc:-54 #egre:-32 #egue:-44 #egui:81 #egur:27 #eite:-90
#ejan:60 #ejar:48 #elig:78 #eman:-32 #emen:58 #emin:50 #empr:-31 #enco:82 #enda:47 #ende:-34 #ends:-27 #enen:-38
#enga:-45 #engi:38 #engo:-63 #ensa:-35 #ensi:-28 #ente:40 #enti:54 #ento:44 #entr:-49 #epen:-39 #epla:62 #erar:75
#eras:77 #erda:109 #eren:99 #eria:-41 #erio:70 #erne:30 #eron:26 #eros:-68 #erou:62 #erpe:43 #erte:41 #ervi:41
#esar:26 #esas:33 #escr:-38 #esde:-33 #esnt:-59 #espe:31 #essa:81 #esta:68 #este:-71 #esto:-88 #eter:52 #ethi:26
#etti:30 #etwe:-76 #even:111 #ever:45 #exac:143 #exit:-58 #expe:-26 #expl:226 #exti:-29 #fail:86 #falt:66 #favo:31
#fect:33 #fere:33 #fica:52 #fill:25 #filt:130 #find:83 #fini:-25 #firs:-28 #five:35 #flui:119 #flus:79 #fore:83
#foun:36 #four:63 #free:-149 #fron:33 #fuer:26 #gain:54 #gara:-27 #gast:133 #gato:84 #gent:87 #gero:62 #gett:34
#ghts:-26 #gine:36 #gnif:50 #gnor:52 #goci:-54 #goin:-76 #gone:-31 #grat:-88 #grav:60 #gres:-32 #guan:182 #guen:-41
#gues:43 #guir:71 #guro:29 #hace:152 #hago:56 #hang:28 #happ:126 #hard:-42 #harg:-60 #harm:37 #hast:35 #have:51
#heel:-29 #heet:51 #hell:-27 #here:-56 #hese:55 #hice:-27 #hich:33 #hing:92 #hist:29 #hold:30 #hora:-77 #hose:48
#houg:51 #houl:59 #hour:-61 #hudd:34 #hurs:-27 #iaja:65 #iaje:45 #ible:-29 #icam:41 #idea:-41 #iend:32 #iene:80
#ient:28 #iere:149 #iern:32 #iero:-33 #ifer:28 #ific:52 #igam:37 #ight:-89 #igni:50 #igno:54 #igro:78 #iles:60
#ills:27 #ilte:79 #iltr:53 #imet:40 #incl:75 #insu:-29 #inte:53 #inve:26 #invo:57 #ione:-25 #ious:52 #iqui:51
#irec:-34 #ires:33 #irst:-28 #irve:-88 #isen:-29 #itch:-26 #jand:119 #join:28 #juni:26 #keep:36 #kids:26 #labo:-61
#lain:84 #lama:-26 #lame:-42 #lanc:-35 #laro:-36 #last:72 #late:-29 #leak:-36 #leas:48 #leav:29 #left:66 #legu:-38
#lema:74 #leva:-28 #lica:143 #life:84 #ligh:-57 #ligr:78 #lime:40 #line:-35 #liqu:69 #llam:-61 #llan:-27 #llas:43
#lleg:-42 #ller:-57 #llev:-30 #llow:40 #llpa:-33 #long:43 #look:34 #lpar:-33 #lter:73 #ltro:53 #luid:119 #lush:79
#luye:74 #mabl:-29 #make:86 #malo:151 #mana:-57 #mane:107 #mano:-33 #manu:62 #many:51 #maqu:-29 #marc:-79 #marz:39
#mate:-25 #matt:-62 #mber:-97 #mbia:41 #mbie:-26 #mean:-46 #meas:77 #mend:30 #meno:-55 #mens:-33 #ment:53 #mero:-68
#mete:52 #meth:26 #mien:83 #mile:69 #mili:27 #mill:32 #mind:37 #more:87 #moto:25 #mpan:-37 #much:-106 #muer:35
#must:67 #nclu:70 #ncon:81 #ndar:31 #nden:-42 #ndin:-26 #nece:139 #need:187 #nego:-54 #neja:124 #neve:26 #nged:27
#nger:77 #ngin:55 #nifi:50 #nigh:-40 #ning:-39 #noma:42 #nore:50 #norm:89 #nsaj:-32 #nsur:-29 #ntar:35 #ntas:-42
#nten:45 #nter:61 #nths:26 #ntin:38 #nton:28 #ntra:35 #nual:62 #numb:-93 #nume:-52 #nven:25 #nver:39 #nyho:28
#nywa:72 #oble:89 #obli:91 #obot:-33 #obre:-34 #ocio:-56 #ocup:-29 #odom:54 #oesn:-59 #oger:-26 #oiga:27 #oing:83
#oint:68 #oked:34 #oles:-32 #olve:36 #omas:49 #omet:61 #ompa:-32 #onde:-43 #ontr:65 #ooke:34 #oqui:34 #orio:86
#orma:82 #orri:40 #orro:26 #orse:48 #osed:25 #oser:-55 #otar:28 #othe:39 #otor:55 #otra:27 #otro:35 #ould:123
#ound:26 #oure:29 #ousl:-49 #over:-51 #pagu:-28 #pano:25 #pany:-29 #park:-41 #pasa:193 #pase:-37 #pass:-28 #peda:-28
#peli:78 #pend:-47 #pens:53 #pent:41 #pera:50 #pero:108 #pido:-67 #plai:84 #play:30 #plea:52 #plic:141 #poco:38
#poin:41 #poqu:38 #pose:30 #ppen:128 #ppos:26 #pres:-40 #pric:-68 #prob:94 #pued:166 #pues:-58 #pull:-62 #push:29
#quea:-43 #qued:78 #quem:29 #quic:-91 #quid:50 #quie:25 #quin:-36 #raba:-71 #rada:-39 #radi:-26 #rage:-25 #rake:25
#ranc:-40 #rand:-29 #rans:40 #rapi:-73 #raro:98 #rata:60 #rati:-91 #rato:-47 #rave:59 #rdad:47 #read:42 #reak:81
#real:73 #rear:44 #reat:-29 #recc:-30 #reci:-35 #reet:-62 #regr:-32 #reme:50 #remi:49 #repl:51 #resa:-52 #ress:-51
#rest:-30 #rgen:96 #rgin:-36 #ribe:-34 #rice:-68 #ried:54 #ring:-29 #riou:52 #risk:42 #rive:132 #rivi:30 #rmal:89
#rnes:31 #road:44 #robl:93 #robo:-40 #rong:108 #ront:39 #rose:-55 #roso:70 #rota:55 #rous:62 #rpen:43 #rque:-38
#rran:-39 #rrie:43 #rumb:-37 #runk:-25 #rven:-25 #rvic:41 #sabe:90 #safe:56 #saje:-40 #sali:-45 #same:-32 #sari:37
#sary:77 #says:57 #scri:-52 #segu:136 #sema:-35 #sens:29 #sera:33 #seri:67 #sero:-55 #serp:43 #serv:37 #shee:51
#shin:42 #shop:-63 #shou:59 #shud:34 #sign:58 #sigo:67 #sirv:-88 #skip:45 #snow:-25 #sold:-31 #soon:57 #span:25
#sper:42 #sque:-38 #ssar:77 #stad:103 #stan:57 #star:-30 #stop:-52 #stra:29 #stre:-63 #stuf:26 #supp:34 #sura:-29
#sure:42 #tada:30 #tado:64 #take:-67 #tall:-73 #tamb:-35 #tame:26 #tant:30 #tara:41 #tard:-104 #tech:53 #tell:101
#temp:-29 #teng:-101 #text:-66 #that:145 #them:152 #then:46 #thes:55 #they:252 #thin:66 #this:61 #thos:51 #thou:44
#thur:-30 #tien:64 #time:-156 #tine:42 #tire:39 #toca:85 #todo:-27 #toma:-45 #tori:82 #town:-25 #trab:-65 #trad:-39
#tran:53 #trar:80 #tras:49 #trat:58 #trea:53 #tree:-64 #trip:53 #truc:-30 #trut:26 #tter:-62 #tuff:26 #turn:-29
#twee:-76 #uand:-91 #uant:211 #udde:32 #ueda:55 #uede:53 #uedo:118 #uego:-30 #uent:25 #uerd:40 #uert:27 #uess:43
#uick:-91 #uido:65 #uien:-71 #uier:78 #uina:-34 #uito:28 #ulls:-44 #umbe:-93 #umbo:-41 #umer:-52 #unio:26 #uppo:26
#uran:87 #urge:26 #usan:-76 #ushi:39 #usly:-49 #vale:-32 #vece:-33 #vega:31 #vent:33 #vera:86 #verd:122 #viaj:109
#vice:40 #vida:55 #vien:32 #ving:36 #vise:-28 #volv:36 #wait:70 #ween:-76 #were:31 #what:255 #whee:-29 #when:-153
#whic:33 #whys:33 #wifi:-84 #will:107 #wint:58 #with:58 #wont:-39 #worn:33 #worr:62 #wors:42 #woul:-64 #wron:108
#xact:143 #xpla:40 #xpli:186 #xtin:-29 #yeah:-47 #year:33 #yell:29 #yhow:28 #your:-72 #yway:72 %again_later:130
%again_later%call_off:-56 %again_later%car_part:29 %again_later%elsewhere:63 %again_later%how_long:34
%again_later%lift:115 %again_later%meaning:109 %again_later%money:-70 %again_later%place:-47
%again_later%question:-44 %again_later%season:75 %again_later%shift_it:30 %again_later%wrong_one:27 %agree:-50
%agree%away:41 %agree%call_off:136 %agree%car:48 %agree%car_part:51 %agree%do_it:36 %agree%fails:34
%agree%how_long:-61 %agree%leave_me:-35 %agree%money:110 %agree%odometer:-35 %agree%place:103 %agree%refuse:-31
%agree%season:41 %agree%shake:31 %agree%shift_it:69 %agree%wrong_one:36 %away%call_off:39 %away%car:33
%away%odometer:62 %away%on_way:54 %away%place:62 %away%refuse:-41 %away%start_again:-26 %bad%car:-35
%bad%car_part:-55 %bad%leak:-26 %bad%meaning:-65 %bad%money:-34 %bad%noise:-26 %bad%place:74 %bad%question:93
%bring:-70 %bring%call_off:-36 %bring%do_it:-25 %bring%fails:34 %bring%leave_me:-34 %bring%money:-32
%bring%question:66 %bring%shift_it:-63 %busy:-76 %call_off:-36 %call_off%car_part:33 %call_off%do_it:-41
%call_off%doubt:30 %call_off%elsewhere:32 %call_off%meaning:72 %call_off%message:-45 %call_off%odometer:-83
%call_off%refuse:-78 %call_off%shift_it:30 %call_off%start_again:37 %call_off%thanks:41 %car%gone_car:-29
%car%how_long:-30 %car%lift:-60 %car%meaning:28 %car%odometer:34 %car%question:112 %car%refuse:40 %car_part:70
%car_part%do_it:-57 %car_part%fails:-35 %car_part%gone_car:-45 %car_part%leak:-35 %car_part%machine:-33
%car_part%money:-59 %car_part%noise:-81 %car_part%odometer:33 %car_part%on_way:70 %car_part%pay_day:-40
%car_part%place:50 %car_part%question:199 %car_part%refuse:47 %car_part%shake:-32 %car_part%shift_it:-36
%car_part%start_again:50 %do_it:-42 %do_it%elsewhere:-31 %do_it%leak:-34 %do_it%lift:-38 %do_it%question:179
%do_it%refuse:140 %do_it%staff:102 %do_it%start_again:40 %do_it%wrong_one:34 %doubt:30 %elsewhere:-112
%elsewhere%family:-25 %elsewhere%money:26 %elsewhere%pay_day:36 %elsewhere%question:-115 %elsewhere%season:78
%elsewhere%shift_it:74 %elsewhere%wrong_one:28 %fails:87 %fails%how_long:103 %fails%machine:-26 %fails%meaning:36
%fails%question:129 %fails%shift_it:-30 %family:-48 %family%odometer:-30 %family%question:-26 %gone_car:-126
%gone_car%phone:27 %gone_car%question:-33 %how_long:-304 %how_long%lift:55 %how_long%meaning:44 %how_long%on_way:-29
%how_long%opening:-34 %how_long%question:-122 %how_long%refuse:-64 %how_long%season:39 %leak:-55 %leave_me:-107
%leave_me%question:-93 %leave_me%refuse:-31 %lift%meaning:41 %lift%money:-29 %lift%on_way:-36 %lift%pay_day:45
%lift%question:-91 %lift%season:79 %machine:-69 %machine%refuse:85 %machine%staff:-29 %meaning:488 %meaning%money:-41
%meaning%on_way:-32 %meaning%phone:-58 %meaning%place:27 %meaning%question:329 %meaning%refuse:51 %meaning%season:35
%meaning%shift_it:28 %meaning%thanks:32 %message:-128 %message%question:-58 %message%refuse:-34 %money:-289
%money%place:204 %money%question:-206 %money%shift_it:-37 %money%wrong_one:29 %noise:-47 %noise%question:-32
%odometer%refuse:28 %on_way:-44 %on_way%place:58 %on_way%question:73 %opening:-114 %opening%question:-102
%pay_day:-70 %pay_day%question:-85 %pay_day%shift_it:43 %phone:-160 %phone%question:-41 %phone%shift_it:-34
%place:-99 %place%question:-104 %place%refuse:-27 %question:344 %question%refuse:59 %question%season:-29
%question%shift_it:-88 %question%staff:103 %question%thanks:-43 %question%who:-174 %question%wrong_one:96 %refuse:-49
%refuse%staff:25 %refuse%start_again:-51 %refuse%thanks:29 %season:93 %season%shift_it:74 %shift_it%wrong_one:32
%smoke_smell:-29 %start_again:33 %thanks:-56 %who:-155 %wrong_one:-62 @?:254 @after_visit:-42 @car:-97 @confirm:-80
@confirm_stop:-210 @odometer:53 @offers:-50 @reading:-74 @time:-102 @times:-72 @walk_in:-50 ^_aguanta:92
^_ballpark:-33 ^_cada:30 ^_can:85 ^_car:-37 ^_claro:-37 ^_como:-32 ^_could:104 ^_cual:38 ^_cuando:-33 ^_cuanto:91
^_de:151 ^_depends:-32 ^_do:123 ^_doesnt:-50 ^_dont:-28 ^_el:-75 ^_es:38 ^_esta:64 ^_estan:-28 ^_got:-31 ^_hay:30
^_hello:-26 ^_i:-159 ^_if:-29 ^_is:155 ^_it:-175 ^_lo:-89 ^_need:-64 ^_no:30 ^_not:-50 ^_odometer:45 ^_para:71
^_pero:39 ^_por:63 ^_puede:25 ^_puedo:166 ^_pues:-38 ^_que:25 ^_quiero:-27 ^_se:45 ^_should:67 ^_si:-143 ^_that:-88
^_tienen:-33 ^_tire:-27 ^_top:33 ^_va:-26 ^_what:-231 ^_when:-38 ^_which:46 ^_who:-26 ^_why:134 ^_will:114 ^_would:35
^_y:25 ^_ya:-79 ^_yeah:-32 ^_yes:-46 ^_yo:-30 a:58 a__belt:29 a__carro:29 a__deal:28 a__filter:72 a__of:-36
a__off:-34 a__thing:-30 a__to:32 a__trip:66 a_big:40 a_cabin:77 a_como:-30 a_hacer:90 a_nice:25 a_que:-36 a_quick:-35
a_rip:-43 a_road:58 a_serpentine:36 about:-64 about_$:-71 about_it:32 abren:-27 aceite:-96 acuerdo:28 address:-48
address_$:-32 adelante_$:-25 again:48 again_$:64 aguanta:139 aguanta_hasta:35 ahi:-43 ahi_$:-35 algo:82 all:50
all__thing:-32 all_day:-40 all_four:73 am:85 am_i:72 an:-64 an_hour:-50 and:127 and__i:30 and__is:34 and__it:53
and__much:54 and__you:26 and_how:50 and_is:45 and_it:-39 and_what:69 and_why:59 andar:40 andar_asi:29 anyhow:28
anyway:63 anyway_$:58 appointment_$:-32 are:86 are_$:-30 are__charging:-36 are__doing:59 are_they:97 are_we:38
are_you:-26 asi:175 asi_$:163 at_that:27 at_the:-27 back:-36 bad:-70 ballpark:-33 ballpark_$:-30 be:-51 be_$:-94
be__to:41 be_doing:88 been:-33 before:75 before_it:90 belt:81 belt_$:35 between:-76 between_and:-32 big:53
big_deal:47 boot:29 brake_$:-29 brake_fluid:29 brakes:44 brakes_$:39 brand:-37 break:82 break_down:79 bring:-59
but:27 but_what:66 cabin:82 cabin_filter:73 cabina:38 cabina_$:33 cada:36 can:203 can__come:-26 can__drive:112
can__get:38 can__wait:159 can_i:155 can_it:146 can_you:-43 car:-32 caro:-47 carro_$:29 changed:27 charge:-25
charging:-37 checking:33 cita:69 cita_$:33 claro:-33 claro__si:-37 claro_que:-38 close:-26 cobran:-32 come:81
come_$:111 come_to:-40 coming:29 coming__for:25 como:-117 como__que:73 como_saben:72 company:-29 coolant_$:25 cosa:65
cosa_$:36 cost:-139 cost_$:-65 cost_me:-32 could:127 could_do:31 could_you:95 creo_que:-32 cual__el:61 cual_es:33
cuando:-91 cuanto:53 cuanto__me:104 cuanto__queda:126 cuanto_es:-53 cuanto_mas:129 cuanto_me:-59 cuanto_por:-43
dan:-47 dangerous:67 dangerous_$:36 dangerous_to:27 day:-87 day_$:-41 day_thing:-42 days:-36 de:109 de__a:28
de__cita:26 de__como:-25 de__lo:57 de__me:29 de__o:50 de__taller:-25 de_cabina:38 de_la:52 de_las:-32 de_llantas:-66
de_que:77 de_veras:60 de_verdad:85 de_vida:64 deal:65 debe:52 decir:71 decir_$:63 dejo:32 del:58 depends:-34
desde:-33 desde_que:-37 dia:-103 dia_$:-63 dias:-39 dicen:26 did:80 did__find:81 did_it:-30 did_that:-26 did_the:27
did_you:95 digame:37 digo:-49 dinero:25 direccion:-30 direccion_$:-32 do:111 do__charge:-32 do__get:-58 do__need:161
do__use:-42 do_i:65 do_it:-80 do_they:49 do_this:50 do_you:-80 does:161 does__mean:27 does__take:-39 does_that:75
doesnt:-59 doesnt_matter:-63 doing:159 doing_$:61 doing__it:74 doing_to:74 donde:-45 donde_es:-34 donde_estan:-27
done:31 done_$:35 dont_$:54 down:107 down_for:47 down_on:58 drive:166 drive_it:67 drive_to:63 driving:30 drop:-27
due:112 due_for:39 dura:28 el:-115 el__mes:-28 el__que:-80 el_mes:-25 el_que:-45 en:44 en_el:42 en_junio:27 en_lo:-26
encontraron:82 encontraron_$:74 engine:44 entra:-31 entrada:-25 era:48 es:272 es_$:-168 es__de:41 es__del:28 es__o:42
es__que:101 es__si:40 es__un:-26 es__y:41 es_de:42 es_el:63 es_eso:155 es_este:-47 es_gratis:-82 es_grave:28 es_lo:66
es_malo:77 es_mi:-35 es_muy:26 es_normal:51 es_peligroso:59 es_que:-55 es_rapido:-31 es_tardado:-61 es_un:39
es_una:-37 es_urgente:29 es_y:40 esa:50 esa__que:25 esas:33 ese:52 ese_servicio:55 eso:340 eso_$:123 eso__que:35
eso_de:53 eso_del:58 eso_y:37 espanol:25 esperar:58 esperar_$:45 espero_$:27 esta:79 esta_$:30 esta_muy:75 estan:58
este:-72 este_$:-43 esto:-55 esto_$:-51 even:119 even__a:37 even_is:44 exactamente:34 exactamente_$:31 exactly:120
exactly_$:44 exactly__you:26 exit:-58 explain:46 explica:112 falta:78 falta_$:36 favor:37 favor_$:56 filter:78
filter_$:59 filtro:56 filtro__cabina:38 filtro_de:38 find:63 fine__it:-30 first:-28 first_$:-26 five:35 five_$:27
fix:-37 fix_it:-30 fluid:109 flush:71 flush_$:33 for:54 for_$:125 for__and:34 for_a:-29 for_again:43 for_it:-52
for_me:35 for_that:-30 for_tires:-51 for_what:26 found:36 four:63 four_$:63 free:-153 free_$:-112 freno:-60
freno_$:-42 frenos:66 frenos_$:65 front:44 fue:66 fue__que:60 fue_lo:55 game:-25 get:-72 get_for:-31 get_to:-27
getting:34 go_for:-56 go_on:72 going:-76 going__be:-59 going__cost:-40 going__run:-25 going_to:-79 gone:-31
gratis:-87 gratis_$:-78 grave:62 guess:43 guess__is:28 hace:38 hace_$:31 hace_falta:29 hacer:109 hacer_$:54 hago:56
hago_$:60 happen:41 happens:91 happens__i:84 happens_if:84 hard:-26 has:-25 hasta:35 hasta_entonces:26 hasta_que:-68
have:45 have__do:119 have_it:-27 have_to:78 hay__si:76 hay_que:-37 hello:-26 hice:-27 hold_up:30 home_$:27 hora:-39
hour:-52 how:80 how__are:75 how__can:99 how__does:-39 how__for:-57 how__i:-103 how__is:-72 how__it:43 how__to:-40
how__will:-45 how__you:-27 how_come:126 how_do:-29 how_low:53 how_many:52 how_much:-100 hoy:-55 hoy_mismo:-25
i__a:-40 i__all:66 i__do:46 i__have:54 i__it:45 i__need:88 i__on:127 i__there:-25 i__these:-31 i__to:-104 i__you:-35
i_be:57 i_can:-32 i_come:-42 i_do:-28 i_dont:32 i_drive:81 i_go:62 i_just:31 i_know:-29 i_mean:-75 i_need:40
i_owe:-29 i_skip:33 i_thought:25 i_use:-29 i_wait:32 i_was:-55 idea:-41 idea_$:-30 if:157 if__dont:56 if__skip:33
if_i:155 ignore:43 ill:-37 im:36 im__on:50 in:-51 in_$:-41 in_that:48 incluye:76 incluye__servicio:51 insurance:-29
is:164 is__a:62 is__about:-69 is__address:-45 is__appointment:31 is__bad:83 is__cabin:66 is__cost:-52
is__dangerous:54 is__do:62 is__fluid:34 is__for:91 is__free:-87 is__going:-69 is__labor:-47 is__like:-45
is__number:-30 is__oil:-46 is__ok:81 is__on:65 is__point:35 is__price:-51 is__really:-50 is__run:-167 is__safe:50
is__serious:51 is__serpentine:30 is__something:41 is__thing:38 is__urgent:31 is__wait:-52 is__what:35 is__wifi:-60
is__with:84 is_a:168 is_due:43 is_fine:-46 is_for:40 is_it:156 is_leaking:-26 is_low:25 is_that:115 is_the:-129
is_this:-53 is_what:-29 is_wrong:88 is_your:-73 it:177 it_$:-75 it__a:-31 it__an:-46 it__done:-27 it__due:27
it__for:55 it__free:-49 it__in:-31 it__is:57 it__it:47 it__k:47 it__leaking:-25 it__quick:-32 it__that:81 it__this:40
it__to:59 it__up:25 it_a:59 it_back:-28 it_bad:52 it_be:-68 it_cost:-63 it_dangerous:36 it_do:31 it_down:47 it_due:40
it_going:-27 it_how:33 it_is:-113 it_need:35 it_now:45 it_ok:78 it_quick:-47 it_really:-33 it_safe:43 it_take:-41
it_the:-27 it_to:66 it_urgent:31 it_wait:129 it_what:32 junio:26 k:54 k_$:44 keep:34 kids:26 know__is:25 know_you:-25
la:-96 la__de:-47 la_cita:84 labor:-61 labor_$:-41 las:-28 las_$:-26 last:66 later:-34 le:225 le__a:114 le__y:28
le_digo:-30 le_falta:52 le_hacen:52 le_pasa:58 le_toca:80 le_van:93 leave_it:-25 leaving:38 left:66 left_on:80 les:88
lets__it:-27 life:66 light:-32 light__on:-28 like:-25 like_an:-44 like_im:37 liquido:53 list:25 llamen:-27
llamen_$:-26 llantas_$:68 llegue:-27 lo:64 lo__pronto:-28 lo_dejo:37 lo_hago:74 lo_mas:-35 lo_necesito:65 long:39
long__i:68 long__it:52 long__need:-44 long_do:-27 long_does:-43 long_will:-28 long_you:-48 look:48 low:140 low_$:33
make:85 make__to:87 make_it:96 mal:107 mal_$:159 mal_servicio:-56 malo:143 malo_$:31 manejando:108 manejando_$:52
manejar:41 manual:62 many:51 maquina:-29 marca:-63 marzo:39 mas:41 mas__menos:-26 mas_o:-26 mas_pronto:-29 matter:-60
matter_$:-28 me_$:-28 me__el:-35 me__it:55 me__por:64 me_acuerdo:29 me_back:-35 me_explica:114 me_llamen:-26
me_lo:-52 me_paguen:-28 me_puede:30 me_sirve:-64 me_urge:-59 me_what:94 mean:-26 menos:-54 mensaje:-28 mes:31
mes_$:34 mes_que:-26 mi:-96 mi_carro:45 mientras:43 miles:60 miles__i:49 mis:37 mm:56 months:26 more:101 more_$:82
motor:40 much:-115 much_$:33 much__is:57 much__it:-56 much_for:-47 much_is:-83 much_to:-42 muerte:43 must:67 muy:76
muy_mal:54 my:-43 my_sheet:30 necesario:39 necesito_$:76 necesito__me:-31 necesito_que:-33 necessary:77
necessary_$:77 need:127 need__bring:-33 need__for:-54 need__oil:46 need_a:-42 need_an:39 need_that:77 need_to:-110
needs:72 needs_to:42 negocio:-54 new:-48 ni:-57 night:-26 no_$:-74 no__acuerdo:29 no__hago:87 no__is:64
no__necesario:-49 no__pero:31 no_entiendo:26 no_es:-49 no_gracias:27 no_lo:69 no_para:-34 no_what:101 noise:25
nomas:42 normal:81 normal_$:33 not:-285 not_$:-205 now:127 now_$:103 now__i:46 number:-105 number_$:-53
number__this:-30 number_is:-36 numero:-44 numero_es:-28 o:269 o_es:61 o_menos:-26 o_nomas:52 o_que:44 ocupo:-37
odometer:54 odometer_is:46 of__do:-36 of_oil:-36 of_them:47 off_of:31 oiga:30 oil:-67 ok:110 ok_$:-31 ok__drive:78
ok__it:-30 ok_to:117 on:121 on_$:-64 on__list:32 on__road:43 on__sheet:27 on_me:51 on_my:36 on_that:-27 or:136
or_$:-30 or__that:26 or_a:42 or_is:59 or_no:43 or_the:39 or_what:-50 other:25 otra:31 otra_vez:26 otro:36 otro_mes:38
owe:-30 paguen:-28 para:38 para__es:70 para__lo:40 para__no:-36 para__que:-25 para__quieren:46 para__sirve:33
para_cuando:-31 para_que:145 pasa:183 pasa__no:73 pasa_si:108 peligroso:70 peligroso__asi:29 pero:103 pero__es:34
pero__que:27 pero_que:76 pie:34 place:-42 please:59 please_$:36 poco:31 point:42 poquito:38 por:70 por__no:-58
por__rumbo:-41 por__tan:57 por_favor:42 por_que:181 price:-63 price_on:-34 problema:82 pueda:-25 puede:80
puede_esperar:60 pueden:-26 puedo:150 puedo__asi:86 puedo_esperar:55 puedo_seguir:74 pues:-33 pulls:-44 puro:25
put__off:34 que:82 que_$:-112 que__caro:-45 que__con:-28 que__de:-65 que__decir:77 que__en:36 que__es:-124
que__ese:59 que__eso:182 que__estan:-38 que__hacen:41 que__hicieron:29 que__le:84 que__llamen:-26 que__lo:96
que__mal:78 que__malo:52 que__me:-35 que__paguen:-25 que__pasa:43 que__por:-30 que__que:-26 que__si:108 que__toca:74
que__un:39 que__van:99 que_cobran:-26 que_dicen:27 que_entra:-29 que_era:58 que_es:412 que_esperar:-29 que_esta:36
que_fue:71 que_hora:-42 que_incluye:77 que_la:-34 que_le:293 que_mal:-63 que_me:-100 que_no:-154 que_numero:-28
que_pasa:110 que_quiere:77 que_quieren:46 que_sea:-38 que_si:-86 que_significa:38 que_sirve:33 que_taller:-33
que_tan:201 que_tiene:111 que_va:-48 queda:97 queda_$:99 quedo:-31 quick:-86 quick_$:-48 quick__or:-27 quien:-51
quien_es:-51 quiere:62 quiere_decir:77 quieren:70 quiero:-31 quiero_que:-29 rapido:-64 rapido_$:-26 rato:-44
ready:-25 real:-25 really:98 really_free:-38 rear:40 rear_$:25 remind:57 remind__what:73 remind_me:60 right_now:35
rip:-43 road:49 road_trip:59 robot:-33 robot_$:-29 rumbo:-41 run:-257 run_$:-174 run_me:-73 saben:65 saber:31 safe:55
safe_to:35 same:-32 says:57 se:44 sea:-46 see:-51 see__my:-42 see_what:-45 seguir:73 segun:28 seguro:29 semana:-46
sera:39 serious:111 serious_$:68 serpentine:43 serpentine_belt:36 service:45 set:-50 set__back:-30 set_me:-30
sheet:51 sheet_$:32 shop:-70 shop_is:-28 should:58 should__be:61 should_i:60 shudders:27 si:99 si_$:-69 si__dejo:46
si__lo:85 si__que:-46 si_lo:103 si_me:-30 si_no:117 si_ya:-29 significa:50 sigo:68 sirve:-64 sirve_$:-50 sirven:-25
skip:29 so:75 so__is:30 so_soon:61 so_what:40 sold:-31 something:26 something_that:49 soon:70 soy:-27 speak:-29
stop:-46 stop_$:-27 street:-62 street_$:-36 stuff:26 su:-25 supposed:27 supposed_to:27 take:-61 take_$:-37 taller:-52
tambien:-35 tan:287 tan__esta:58 tan__estan:102 tan_caro:-42 tan_grave:30 tan_mal:93 tan_malo:50 tan_pronto:39
tardado:-61 tarde:-33 tax:-36 tax_$:-29 tech:56 tell:86 tell_me:94 tengo:-63 tengo_que:-54 texting:-28 th_or:31
that:145 that_$:47 that__do:33 that__to:-26 that_a:29 that_and:32 that_bad:48 that_be:-55 that_going:-38 that_is:-67
that_it:25 that_the:33 that_was:-25 the:72 the__is:31 the__of:27 the__on:-28 the__one:35 the__or:35 the__says:35
the__stuff:25 the__thing:50 the__with:42 the_address:-26 the_belt:42 the_other:36 the_price:-42 the_tech:58
the_thing:54 the_tires:90 the_wait:-54 the_winter:61 them:152 them_$:134 then:46 then_$:42 there:-28 there_$:-46
these:55 these_$:80 they:241 they_$:80 they__the:55 they__to:46 thing_$:-44 thing__the:26 this:61 this_$:-99
this__for:56 this_about:-75 this_number:-47 those:51 though:35 though_$:44 tiene:86 tiene_$:81 tienen:-37
tienen_$:-33 til:31 time:-159 time__it:-37 time__you:-31 time_do:-35 tires:53 tires_$:49 to:97 to_$:-43 to__me:-71
to__this:41 to__to:47 to_bring:-45 to_cost:-40 to_do:103 to_drive:104 to_fix:-33 to_it:79 to_know:30 to_me:-30
to_see:-32 to_the:-27 to_you:-30 toca:88 toca_$:68 today_$:-30 too:-29 top:55 top_off:59 trabajo:-36 tread:64 trip:56
un__a:30 un_filtro:29 un_poquito:26 un_robot:-25 una:-31 una_maquina:-27 under:-28 up_$:-25 urge:-65 urgent:43
urgent_$:31 urgente:53 use:-73 va:-95 va_$:-38 vale:-31 van:96 van__hacer:81 van_a:103 veces:-33 vegas:31 vegas_$:33
veo:26 veras:60 verdad:109 viaje:45 vida:59 viene:37 viernes:31 viernes__de:25 wait:57 wait_for:-34 wait_on:32
wait_or:25 wait_til:25 was:62 was__there:-34 was_just:-30 was_the:110 way:-25 we__it:-27 week:-25 were:31 what:241
what__a:154 what__if:84 what__it:75 what__that:-94 what__this:-41 what__wrong:97 what__you:133 what__your:-79
what_a:-52 what_about:-46 what_am:50 what_are:30 what_company:-28 what_did:192 what_do:-101 what_does:133
what_even:38 what_exactly:68 what_for:71 what_happens:87 what_i:-49 what_is:31 what_it:-35 what_my:-37 what_needs:63
what_street:-40 what_this:37 what_time:-106 what_was:157 what_would:-95 when:-162 when_i:-93 where__the:27 which:35
which__are:32 which__do:-39 which__is:-75 which_exit:-44 which_shop:-36 who:-59 who__this:-38 who_is:-57 why:315
why_$:72 why__i:61 why__is:30 why__it:85 why__soon:59 why__you:41 why_do:98 why_does:62 why_is:64 why_not:-200
why_so:59 why_would:74 whys:33 whys_it:36 wifi:-84 wifi_$:-65 will:107 will__be:-45 will__make:52 will_it:37
will_the:46 winter:58 winter_$:62 with:64 with_it:51 with_tax:-25 wont:-39 wont_be:-29 worn:33 worried:55 worse:38
would:-37 would__need:43 would_that:-83 would_you:90 wouldnt:-26 wrong:108 wrong__it:42 wrong_with:99 y:162
y__cuanto:29 y__de:30 y__que:87 y_como:26 y_cuanto:26 y_de:47 y_donde:-27 y_le:-25 y_para:34 y_por:49 y_que:48
y_si:35 ya:-176 ya_esta:-47 ya_que:-34 yeah:-47 yellow:30 yes:-114 yes_$:-66 yes__what:38 yes_i:-26 yet:44 yet_$:44
yo:-65 you:-108 you_$:-65 you__for:-69 you__it:-48 you__me:122 you__that:31 you__the:-44 you__to:28 you_are:-28
you_be:92 you_charge:-34 you_charging:-37 you_doing:29 you_find:78 you_get:-45 you_have:-43 you_need:-34 you_on:-31
you_tell:67 your:-100 youre:29
"""
